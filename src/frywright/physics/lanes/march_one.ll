; Made by scripts/lanes.py from sources of sha256 e51f68ede5a1e8f59f4b64f2bf926bbe9b91e81a0fcec579e94fbaf7efe2f1c0.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <8 x double>], [14 x <8 x double>], [14 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Joint, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Flash, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, [8 x ptr], ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [16 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }
%struct.Joint = type { <8 x double>, <8 x double>, <8 x double> }
%struct.Flash = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define range(i64 17984, 17921) i64 @work_space_one(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %3 = load i64, ptr %2, align 8, !tbaa !4
  %4 = mul i64 %3, 15
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %6 = load i64, ptr %5, align 8, !tbaa !13
  %7 = mul i64 %6, 9
  %8 = add i64 %7, %4
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %10 = load i64, ptr %9, align 8, !tbaa !14
  %11 = add i64 %8, %10
  %12 = shl i64 %11, 6
  %13 = add i64 %12, 17984
  ret i64 %13
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind willreturn memory(argmem: readwrite)
declare void @llvm.lifetime.start.p0(i64 immarg, ptr nocapture) #1

; Function Attrs: mustprogress nocallback nofree nosync nounwind willreturn memory(argmem: readwrite)
declare void @llvm.lifetime.end.p0(i64 immarg, ptr nocapture) #1

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define range(i64 0, 2) i64 @march_one(ptr nocapture noundef %0, ptr noundef %1, i64 noundef %2) local_unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = alloca <8 x double>, align 64
  %6 = alloca <8 x double>, align 64
  %7 = alloca <8 x i64>, align 64
  %8 = alloca <8 x double>, align 64
  %9 = alloca <8 x double>, align 64
  %10 = alloca <8 x double>, align 64
  %11 = alloca <8 x double>, align 64
  %12 = alloca <8 x double>, align 64
  %13 = alloca <8 x double>, align 64
  %14 = alloca <8 x i64>, align 64
  %15 = icmp eq i64 %2, 0
  br i1 %15, label %105, label %16

16:                                               ; preds = %3
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %18 = load i64, ptr %17, align 8, !tbaa !15
  %19 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store i64 %18, ptr %19, align 64, !tbaa !16
  %20 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  store i64 1, ptr %20, align 8, !tbaa !20
  %21 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %22 = load i64, ptr %21, align 8, !tbaa !4
  %23 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  store i64 %22, ptr %23, align 16, !tbaa !21
  %24 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %25 = load i64, ptr %24, align 8, !tbaa !13
  %26 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  store i64 %25, ptr %26, align 8, !tbaa !22
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %28 = load i64, ptr %27, align 8, !tbaa !23
  %29 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  store i64 %28, ptr %29, align 32, !tbaa !24
  %30 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %31 = load double, ptr %30, align 8, !tbaa !25
  %32 = insertelement <8 x double> poison, double %31, i64 0
  %33 = shufflevector <8 x double> %32, <8 x double> poison, <8 x i32> zeroinitializer
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  store <8 x double> %33, ptr %34, align 64, !tbaa !26
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  store i64 0, ptr %35, align 8, !tbaa !27
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 6336
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 6280
  store ptr %36, ptr %37, align 8, !tbaa !28
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 16064
  %39 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %40 = add nsw i64 %22, 1
  %41 = getelementptr inbounds <8 x double>, ptr %38, i64 %22
  %42 = getelementptr inbounds <8 x double>, ptr %41, i64 %22
  %43 = getelementptr inbounds <8 x double>, ptr %42, i64 %22
  %44 = getelementptr inbounds <8 x double>, ptr %43, i64 %22
  %45 = getelementptr inbounds <8 x double>, ptr %44, i64 %22
  %46 = getelementptr inbounds <8 x double>, ptr %45, i64 %22
  %47 = getelementptr inbounds <8 x double>, ptr %46, i64 %22
  %48 = getelementptr inbounds <8 x double>, ptr %47, i64 %22
  %49 = getelementptr inbounds <8 x double>, ptr %48, i64 %22
  %50 = getelementptr inbounds <8 x double>, ptr %49, i64 %22
  %51 = getelementptr inbounds <8 x double>, ptr %50, i64 %22
  %52 = load ptr, ptr %39, align 8, !tbaa !29
  %53 = load i64, ptr %52, align 8, !tbaa !30
  %54 = getelementptr inbounds nuw i8, ptr %1, i64 15808
  store i64 %53, ptr %54, align 64, !tbaa !31
  %55 = getelementptr inbounds nuw i8, ptr %1, i64 15880
  %56 = getelementptr inbounds nuw i8, ptr %1, i64 15888
  %57 = getelementptr inbounds nuw i8, ptr %1, i64 15896
  %58 = getelementptr inbounds nuw i8, ptr %1, i64 15904
  %59 = getelementptr inbounds nuw i8, ptr %1, i64 15912
  %60 = getelementptr inbounds nuw i8, ptr %1, i64 15920
  %61 = getelementptr inbounds nuw i8, ptr %1, i64 15928
  %62 = getelementptr inbounds nuw i8, ptr %1, i64 15936
  %63 = getelementptr inbounds nuw i8, ptr %1, i64 15944
  %64 = getelementptr inbounds nuw i8, ptr %1, i64 15952
  %65 = getelementptr inbounds nuw i8, ptr %1, i64 15960
  store ptr %38, ptr %55, align 8, !tbaa !36
  store ptr %41, ptr %56, align 8, !tbaa !36
  store ptr %42, ptr %57, align 8, !tbaa !36
  store ptr %43, ptr %58, align 8, !tbaa !36
  store ptr %44, ptr %59, align 8, !tbaa !36
  store ptr %45, ptr %60, align 8, !tbaa !36
  store ptr %46, ptr %61, align 8, !tbaa !36
  store ptr %47, ptr %62, align 8, !tbaa !36
  store ptr %48, ptr %63, align 8, !tbaa !36
  store ptr %49, ptr %64, align 8, !tbaa !36
  store ptr %50, ptr %65, align 8, !tbaa !36
  %66 = getelementptr inbounds nuw i8, ptr %1, i64 15968
  store ptr %51, ptr %66, align 32, !tbaa !37
  %67 = icmp eq i64 %53, 0
  %68 = select i1 %67, i64 0, i64 2
  %69 = shl i64 %40, %68
  %70 = getelementptr inbounds <8 x double>, ptr %51, i64 %69
  %71 = getelementptr inbounds nuw i8, ptr %1, i64 15976
  %72 = getelementptr inbounds nuw i8, ptr %1, i64 15984
  %73 = getelementptr inbounds nuw i8, ptr %1, i64 15992
  %74 = getelementptr inbounds nuw i8, ptr %1, i64 16000
  %75 = getelementptr inbounds nuw i8, ptr %1, i64 16008
  %76 = getelementptr inbounds nuw i8, ptr %1, i64 16016
  %77 = getelementptr inbounds nuw i8, ptr %1, i64 16024
  %78 = getelementptr inbounds nuw i8, ptr %1, i64 16032
  %79 = getelementptr inbounds nuw i8, ptr %1, i64 16040
  store ptr %70, ptr %71, align 8, !tbaa !36
  %80 = getelementptr <8 x double>, ptr %70, i64 %25
  %81 = getelementptr i8, ptr %80, i64 64
  store ptr %81, ptr %72, align 8, !tbaa !36
  %82 = getelementptr <8 x double>, ptr %81, i64 %25
  %83 = getelementptr i8, ptr %82, i64 64
  store ptr %83, ptr %73, align 8, !tbaa !36
  %84 = getelementptr <8 x double>, ptr %83, i64 %25
  %85 = getelementptr i8, ptr %84, i64 64
  store ptr %85, ptr %74, align 8, !tbaa !36
  %86 = getelementptr <8 x double>, ptr %85, i64 %25
  %87 = getelementptr i8, ptr %86, i64 64
  store ptr %87, ptr %75, align 8, !tbaa !36
  %88 = getelementptr <8 x double>, ptr %87, i64 %25
  %89 = getelementptr i8, ptr %88, i64 64
  store ptr %89, ptr %76, align 8, !tbaa !36
  %90 = getelementptr <8 x double>, ptr %89, i64 %25
  %91 = getelementptr i8, ptr %90, i64 64
  store ptr %91, ptr %77, align 8, !tbaa !36
  %92 = getelementptr <8 x double>, ptr %91, i64 %25
  %93 = getelementptr i8, ptr %92, i64 64
  store ptr %93, ptr %78, align 8, !tbaa !36
  %94 = getelementptr <8 x double>, ptr %93, i64 %25
  %95 = getelementptr i8, ptr %94, i64 64
  store ptr %95, ptr %79, align 8, !tbaa !36
  %96 = getelementptr <8 x double>, ptr %95, i64 %25
  %97 = getelementptr i8, ptr %96, i64 64
  %98 = getelementptr inbounds nuw i8, ptr %1, i64 6272
  store ptr %97, ptr %98, align 64, !tbaa !38
  %99 = load i64, ptr %0, align 8, !tbaa !39
  %100 = icmp sgt i64 %99, 0
  br i1 %100, label %101, label %102

101:                                              ; preds = %16
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #5
  br label %105

102:                                              ; preds = %16
  %103 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %104 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0, i64 noundef 0) #5
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #5
  store i64 0, ptr %104, align 8, !tbaa !30
  store i64 0, ptr %103, align 8, !tbaa !30
  br label %105

105:                                              ; preds = %102, %101, %3
  %106 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %109 = load i64, ptr %107, align 8, !tbaa !40
  %110 = load i64, ptr %108, align 8, !tbaa !41
  %111 = sub nsw i64 %109, %110
  %112 = icmp slt i64 %111, 16
  br i1 %112, label %6493, label %113

113:                                              ; preds = %105
  %114 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  %115 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  %116 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  %117 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 216
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %121 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %122 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %125 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %126 = getelementptr inbounds nuw i8, ptr %1, i64 6280
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %129 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  %130 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %166 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 6016
  %168 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %169 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 6272
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %219 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 5512
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 5576
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 5520
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 5584
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 5528
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 5592
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 5536
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 5600
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 5544
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 5608
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 5552
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5616
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 5560
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 5624
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 6216
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 6224
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 6232
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 6240
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 6248
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 6256
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 6264
  br label %274

274:                                              ; preds = %113, %532
  %275 = load i64, ptr %106, align 8, !tbaa !30
  %276 = icmp eq i64 %275, 0
  br i1 %276, label %537, label %277

277:                                              ; preds = %274
  %278 = load double, ptr %114, align 8, !tbaa !42
  %279 = fcmp oeq double %278, 0.000000e+00
  br i1 %279, label %537, label %280

280:                                              ; preds = %277
  %281 = load i64, ptr %115, align 16, !tbaa !21
  %282 = load i64, ptr %116, align 8, !tbaa !22
  %283 = load i64, ptr %117, align 8, !tbaa !30
  %284 = load ptr, ptr %118, align 8, !tbaa !43
  %285 = mul nsw i64 %283, 40
  %286 = getelementptr inbounds i8, ptr %284, i64 %285
  %287 = load double, ptr %119, align 8, !tbaa !42
  store double %287, ptr %286, align 8, !tbaa !42
  %288 = load double, ptr %120, align 8, !tbaa !42
  %289 = getelementptr inbounds nuw i8, ptr %286, i64 8
  store double %288, ptr %289, align 8, !tbaa !42
  %290 = load double, ptr %121, align 8, !tbaa !42
  %291 = getelementptr inbounds nuw i8, ptr %286, i64 16
  store double %290, ptr %291, align 8, !tbaa !42
  %292 = load double, ptr %122, align 8, !tbaa !42
  %293 = getelementptr inbounds nuw i8, ptr %286, i64 24
  store double %292, ptr %293, align 8, !tbaa !42
  %294 = load double, ptr %123, align 8, !tbaa !42
  %295 = getelementptr inbounds nuw i8, ptr %286, i64 32
  store double %294, ptr %295, align 8, !tbaa !42
  %296 = load i64, ptr %124, align 8, !tbaa !44
  %297 = icmp eq i64 %296, 0
  br i1 %297, label %521, label %298

298:                                              ; preds = %280
  %299 = load i64, ptr %125, align 64, !tbaa !16
  %300 = icmp sgt i64 %299, 0
  br i1 %300, label %301, label %521

301:                                              ; preds = %298
  %302 = load ptr, ptr %126, align 8, !tbaa !28
  %303 = getelementptr inbounds nuw i8, ptr %302, i64 1920
  %304 = getelementptr inbounds nuw i8, ptr %302, i64 4992
  %305 = load ptr, ptr %127, align 8, !tbaa !45
  %306 = mul nsw i64 %299, %283
  %307 = mul i64 %281, 3
  %308 = load ptr, ptr %128, align 8, !tbaa !46
  %309 = icmp sgt i64 %281, 0
  %310 = getelementptr inbounds nuw i8, ptr %302, i64 9552
  %311 = getelementptr inbounds nuw i8, ptr %302, i64 9472
  %312 = getelementptr inbounds nuw i8, ptr %302, i64 704
  %313 = getelementptr inbounds nuw i8, ptr %302, i64 768
  %314 = getelementptr inbounds nuw i8, ptr %302, i64 832
  %315 = getelementptr inbounds nuw i8, ptr %302, i64 896
  %316 = getelementptr inbounds nuw i8, ptr %302, i64 192
  %317 = getelementptr inbounds nuw i8, ptr %302, i64 256
  %318 = getelementptr inbounds nuw i8, ptr %302, i64 320
  %319 = getelementptr inbounds nuw i8, ptr %302, i64 5056
  %320 = getelementptr inbounds nuw i8, ptr %302, i64 1024
  %321 = getelementptr inbounds nuw i8, ptr %302, i64 9616
  %322 = getelementptr inbounds nuw i8, ptr %302, i64 9576
  %323 = shl i64 %281, 4
  %324 = icmp sgt i64 %282, 0
  %325 = getelementptr inbounds nuw i8, ptr %302, i64 9696
  %326 = getelementptr inbounds nuw i8, ptr %302, i64 1152
  %327 = getelementptr inbounds nuw i8, ptr %302, i64 9648
  %328 = getelementptr inbounds nuw i8, ptr %302, i64 1344
  %329 = getelementptr inbounds nuw i8, ptr %302, i64 1792
  %330 = getelementptr inbounds nuw i8, ptr %302, i64 4608
  %331 = getelementptr inbounds nuw i8, ptr %302, i64 4672
  %332 = getelementptr inbounds nuw i8, ptr %302, i64 4544
  %333 = getelementptr inbounds nuw i8, ptr %302, i64 4352
  %334 = getelementptr inbounds nuw i8, ptr %302, i64 4416
  %335 = getelementptr inbounds nuw i8, ptr %302, i64 4288
  %336 = and i64 %282, 1
  %337 = icmp eq i64 %282, 1
  %338 = and i64 %282, 9223372036854775806
  %339 = icmp eq i64 %336, 0
  br label %340

340:                                              ; preds = %441, %301
  %341 = phi i64 [ 0, %301 ], [ %496, %441 ]
  %342 = shl i64 %341, 32
  %343 = ashr exact i64 %342, 32
  %344 = getelementptr inbounds double, ptr %303, i64 %343
  %345 = load double, ptr %344, align 8, !tbaa !42
  %346 = getelementptr inbounds double, ptr %304, i64 %343
  %347 = load double, ptr %346, align 8, !tbaa !42
  %348 = add nsw i64 %341, %306
  %349 = mul i64 %307, %348
  %350 = getelementptr inbounds double, ptr %305, i64 %349
  %351 = mul nsw i64 %348, 40
  %352 = getelementptr inbounds i8, ptr %308, i64 %351
  br i1 %309, label %353, label %364

353:                                              ; preds = %340
  %354 = load ptr, ptr %310, align 16, !tbaa !47
  %355 = load i64, ptr %311, align 64, !tbaa !31
  %356 = load ptr, ptr %321, align 16, !tbaa !48
  %357 = getelementptr inbounds double, ptr %10, i64 %343
  %358 = load ptr, ptr %322, align 8, !tbaa !49
  %359 = getelementptr double, ptr %358, i64 %343
  %360 = getelementptr double, ptr %350, i64 %281
  %361 = getelementptr inbounds double, ptr %11, i64 %343
  %362 = getelementptr i8, ptr %350, i64 %323
  %363 = getelementptr inbounds double, ptr %12, i64 %343
  br label %374

364:                                              ; preds = %409, %340
  %365 = phi double [ %347, %340 ], [ %424, %409 ]
  br i1 %324, label %366, label %441

366:                                              ; preds = %364
  %367 = load ptr, ptr %325, align 32, !tbaa !50
  %368 = getelementptr double, ptr %367, i64 %343
  %369 = getelementptr inbounds double, ptr %326, i64 %343
  %370 = load double, ptr %369, align 8, !tbaa !42
  %371 = load ptr, ptr %327, align 16, !tbaa !51
  %372 = getelementptr double, ptr %371, i64 %343
  %373 = load double, ptr %368, align 8, !tbaa !42
  br i1 %337, label %427, label %498

374:                                              ; preds = %409, %353
  %375 = phi double [ %347, %353 ], [ %424, %409 ]
  %376 = phi i64 [ 0, %353 ], [ %425, %409 ]
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #6
  %377 = getelementptr inbounds nuw <8 x double>, ptr %354, i64 %376
  %378 = load <8 x double>, ptr %377, align 64, !tbaa !26
  %379 = icmp slt i64 %376, %355
  br i1 %379, label %380, label %384

380:                                              ; preds = %374
  %381 = load <8 x double>, ptr %320, align 64, !tbaa !26
  %382 = fdiv <8 x double> %378, %381
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #6
  %383 = load <8 x double>, ptr %303, align 64, !tbaa !26
  br label %409

384:                                              ; preds = %374
  %385 = load <8 x double>, ptr %312, align 64, !tbaa !26, !noalias !52
  %386 = load <8 x double>, ptr %313, align 64, !tbaa !26, !noalias !52
  %387 = load <8 x double>, ptr %314, align 64, !tbaa !26, !noalias !52
  %388 = load <8 x double>, ptr %315, align 64, !tbaa !26, !noalias !52
  %389 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %378, <8 x double> %388, <8 x double> %387)
  %390 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %378, <8 x double> %389, <8 x double> %386)
  %391 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %378, <8 x double> %390, <8 x double> %385)
  %392 = fmul <8 x double> %378, %391
  %393 = load <8 x double>, ptr %316, align 64, !tbaa !26, !noalias !52
  %394 = load <8 x double>, ptr %317, align 64, !tbaa !26, !noalias !52
  %395 = load <8 x double>, ptr %318, align 64, !tbaa !26, !noalias !52
  %396 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %392, <8 x double> %395, <8 x double> %394)
  %397 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %392, <8 x double> %396, <8 x double> %393)
  %398 = fdiv <8 x double> splat (double 1.000000e+00), %397
  %399 = fmul <8 x double> %395, %392
  %400 = fmul <8 x double> %399, splat (double 0x3FD5555555555555)
  %401 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %394, <8 x double> splat (double 5.000000e-01), <8 x double> %400)
  %402 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %392, <8 x double> %401, <8 x double> %393)
  %403 = fmul <8 x double> %392, %402
  %404 = fsub <8 x double> %378, %403
  %405 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %404, <8 x double> %398, <8 x double> %392)
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #6
  %406 = load <8 x double>, ptr %319, align 64, !tbaa !26
  %407 = load <8 x double>, ptr %303, align 64, !tbaa !26
  %408 = fsub <8 x double> %406, %407
  br label %409

409:                                              ; preds = %384, %380
  %410 = phi <8 x double> [ %382, %380 ], [ %405, %384 ]
  %411 = phi <8 x double> [ %383, %380 ], [ %408, %384 ]
  store <8 x double> %410, ptr %10, align 64, !tbaa !26
  %412 = getelementptr inbounds nuw <8 x double>, ptr %356, i64 %376
  %413 = load <8 x double>, ptr %412, align 64, !tbaa !26
  %414 = fmul <8 x double> %411, %413
  store <8 x double> %414, ptr %11, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #6
  %415 = fmul <8 x double> %378, %414
  store <8 x double> %415, ptr %12, align 64, !tbaa !26
  %416 = load double, ptr %357, align 8, !tbaa !42
  %417 = getelementptr inbounds nuw double, ptr %350, i64 %376
  store double %416, ptr %417, align 8, !tbaa !42
  %418 = getelementptr <8 x double>, ptr %359, i64 %376
  %419 = load double, ptr %418, align 8, !tbaa !42
  %420 = getelementptr double, ptr %360, i64 %376
  store double %419, ptr %420, align 8, !tbaa !42
  %421 = load double, ptr %361, align 8, !tbaa !42
  %422 = getelementptr double, ptr %362, i64 %376
  store double %421, ptr %422, align 8, !tbaa !42
  %423 = load double, ptr %363, align 8, !tbaa !42
  %424 = fadd double %375, %423
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #6
  %425 = add nuw nsw i64 %376, 1
  %426 = icmp eq i64 %425, %281
  br i1 %426, label %364, label %374, !llvm.loop !55

427:                                              ; preds = %498, %366
  %428 = phi double [ poison, %366 ], [ %518, %498 ]
  %429 = phi double [ %373, %366 ], [ %513, %498 ]
  %430 = phi double [ %365, %366 ], [ %518, %498 ]
  %431 = phi i64 [ 0, %366 ], [ %511, %498 ]
  br i1 %339, label %441, label %432

432:                                              ; preds = %427
  %433 = getelementptr <8 x double>, ptr %368, i64 %431
  %434 = getelementptr i8, ptr %433, i64 64
  %435 = load double, ptr %434, align 8, !tbaa !42
  %436 = fsub double %435, %429
  %437 = fmul double %370, %436
  %438 = getelementptr <8 x double>, ptr %372, i64 %431
  %439 = load double, ptr %438, align 8, !tbaa !42
  %440 = tail call double @llvm.fmuladd.f64(double %437, double %439, double %430)
  br label %441

441:                                              ; preds = %432, %427, %364
  %442 = phi double [ %365, %364 ], [ %428, %427 ], [ %440, %432 ]
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13) #6
  %443 = load <8 x double>, ptr %328, align 64, !tbaa !26
  %444 = load <8 x double>, ptr %316, align 64, !tbaa !26
  %445 = load <8 x double>, ptr %317, align 64, !tbaa !26
  %446 = load <8 x double>, ptr %318, align 64, !tbaa !26
  %447 = fmul <8 x double> %443, %446
  %448 = fmul <8 x double> %447, splat (double 0x3FD5555555555555)
  %449 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %445, <8 x double> splat (double 5.000000e-01), <8 x double> %448)
  %450 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %443, <8 x double> %449, <8 x double> %444)
  %451 = fmul <8 x double> %443, %450
  store <8 x double> %451, ptr %13, align 64, !tbaa !26
  %452 = getelementptr inbounds double, ptr %329, i64 %343
  %453 = load double, ptr %452, align 8, !tbaa !42
  %454 = fsub double %453, %345
  %455 = getelementptr inbounds double, ptr %13, i64 %343
  %456 = load double, ptr %455, align 8, !tbaa !42
  %457 = getelementptr inbounds double, ptr %320, i64 %343
  %458 = load double, ptr %457, align 8, !tbaa !42
  %459 = fmul double %345, %458
  %460 = getelementptr inbounds double, ptr %328, i64 %343
  %461 = load double, ptr %460, align 8, !tbaa !42
  %462 = fmul double %459, %461
  %463 = tail call double @llvm.fmuladd.f64(double %454, double %456, double %462)
  %464 = getelementptr inbounds double, ptr %330, i64 %343
  %465 = load double, ptr %464, align 8, !tbaa !42
  %466 = getelementptr inbounds double, ptr %331, i64 %343
  %467 = load double, ptr %466, align 8, !tbaa !42
  %468 = fsub double %465, %467
  %469 = fsub double %442, %463
  %470 = fsub double %468, %469
  %471 = fcmp ogt double %465, 0.000000e+00
  %472 = fneg double %465
  %473 = select i1 %471, double %465, double %472
  %474 = fcmp ogt double %467, 0.000000e+00
  %475 = fneg double %467
  %476 = select i1 %474, double %467, double %475
  %477 = fadd double %473, %476
  %478 = fcmp ogt double %470, 0.000000e+00
  %479 = fneg double %470
  %480 = select i1 %478, double %470, double %479
  %481 = fcmp ogt double %477, 1.000000e+00
  %482 = select i1 %481, double %477, double 1.000000e+00
  %483 = fdiv double %480, %482
  store double %483, ptr %352, align 8, !tbaa !42
  %484 = getelementptr inbounds double, ptr %332, i64 %343
  %485 = load double, ptr %484, align 8, !tbaa !42
  %486 = getelementptr inbounds nuw i8, ptr %352, i64 8
  store double %485, ptr %486, align 8, !tbaa !42
  %487 = getelementptr inbounds double, ptr %333, i64 %343
  %488 = load double, ptr %487, align 8, !tbaa !42
  %489 = getelementptr inbounds nuw i8, ptr %352, i64 16
  store double %488, ptr %489, align 8, !tbaa !42
  %490 = getelementptr inbounds double, ptr %334, i64 %343
  %491 = load double, ptr %490, align 8, !tbaa !42
  %492 = getelementptr inbounds nuw i8, ptr %352, i64 24
  store double %491, ptr %492, align 8, !tbaa !42
  %493 = getelementptr inbounds double, ptr %335, i64 %343
  %494 = load double, ptr %493, align 8, !tbaa !42
  %495 = getelementptr inbounds nuw i8, ptr %352, i64 32
  store double %494, ptr %495, align 8, !tbaa !42
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13) #6
  %496 = add nuw nsw i64 %341, 1
  %497 = icmp eq i64 %496, %299
  br i1 %497, label %521, label %340, !llvm.loop !57

498:                                              ; preds = %366, %498
  %499 = phi double [ %513, %498 ], [ %373, %366 ]
  %500 = phi double [ %518, %498 ], [ %365, %366 ]
  %501 = phi i64 [ %511, %498 ], [ 0, %366 ]
  %502 = phi i64 [ %519, %498 ], [ 0, %366 ]
  %503 = or disjoint i64 %501, 1
  %504 = getelementptr <8 x double>, ptr %368, i64 %503
  %505 = load double, ptr %504, align 8, !tbaa !42
  %506 = fsub double %505, %499
  %507 = fmul double %370, %506
  %508 = getelementptr <8 x double>, ptr %372, i64 %501
  %509 = load double, ptr %508, align 8, !tbaa !42
  %510 = tail call double @llvm.fmuladd.f64(double %507, double %509, double %500)
  %511 = add nuw nsw i64 %501, 2
  %512 = getelementptr <8 x double>, ptr %368, i64 %511
  %513 = load double, ptr %512, align 8, !tbaa !42
  %514 = fsub double %513, %505
  %515 = fmul double %370, %514
  %516 = getelementptr <8 x double>, ptr %372, i64 %503
  %517 = load double, ptr %516, align 8, !tbaa !42
  %518 = tail call double @llvm.fmuladd.f64(double %515, double %517, double %510)
  %519 = add i64 %502, 2
  %520 = icmp eq i64 %519, %338
  br i1 %520, label %427, label %498, !llvm.loop !58

521:                                              ; preds = %441, %280, %298
  %522 = load i64, ptr %129, align 8, !tbaa !27
  %523 = load i64, ptr %0, align 8, !tbaa !39
  %524 = icmp slt i64 %522, %523
  br i1 %524, label %526, label %525

525:                                              ; preds = %521
  store i64 0, ptr %106, align 8, !tbaa !30
  store i64 0, ptr %130, align 8, !tbaa !30
  store i64 0, ptr %224, align 8, !tbaa !30
  store i64 0, ptr %225, align 8, !tbaa !30
  store i64 0, ptr %226, align 8, !tbaa !30
  store i64 0, ptr %227, align 8, !tbaa !30
  store i64 0, ptr %228, align 8, !tbaa !30
  store i64 0, ptr %229, align 8, !tbaa !30
  store i64 0, ptr %230, align 8, !tbaa !30
  store i64 0, ptr %231, align 8, !tbaa !30
  store i64 0, ptr %232, align 8, !tbaa !30
  store i64 0, ptr %233, align 8, !tbaa !30
  store i64 0, ptr %234, align 8, !tbaa !30
  store i64 0, ptr %235, align 8, !tbaa !30
  store i64 0, ptr %236, align 8, !tbaa !30
  store i64 0, ptr %237, align 8, !tbaa !30
  br label %537

526:                                              ; preds = %521
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #5
  %527 = load i64, ptr %106, align 8, !tbaa !30
  %528 = icmp eq i64 %527, 0
  br i1 %528, label %537, label %529

529:                                              ; preds = %526
  %530 = load double, ptr %114, align 8, !tbaa !42
  %531 = fcmp oeq double %530, 0.000000e+00
  br i1 %531, label %537, label %532

532:                                              ; preds = %6450, %6492, %6489, %4699, %5054, %529
  %533 = load i64, ptr %107, align 8, !tbaa !40
  %534 = load i64, ptr %108, align 8, !tbaa !41
  %535 = sub nsw i64 %533, %534
  %536 = icmp slt i64 %535, 16
  br i1 %536, label %6493, label %274, !llvm.loop !59

537:                                              ; preds = %525, %526, %277, %274, %529
  %538 = load <8 x i64>, ptr %106, align 64, !tbaa !26
  %539 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %538)
  %540 = icmp eq i64 %539, 0
  br i1 %540, label %6493, label %541

541:                                              ; preds = %537
  %542 = load <8 x i64>, ptr %130, align 64, !tbaa !26
  %543 = and <8 x i64> %542, %538
  %544 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %543)
  %545 = icmp eq i64 %544, 0
  %546 = load i64, ptr %153, align 8, !tbaa !20
  br i1 %545, label %1462, label %547

547:                                              ; preds = %541
  %548 = load <8 x double>, ptr %131, align 64, !tbaa !26
  %549 = load <8 x double>, ptr %132, align 64, !tbaa !26
  %550 = load <8 x double>, ptr %133, align 64, !tbaa !26
  %551 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %552 = fsub <8 x double> %550, %551
  %553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %549, <8 x double> %552, <8 x double> %548)
  %554 = load <8 x double>, ptr %135, align 64, !tbaa !26
  %555 = fcmp une <8 x double> %554, splat (double 2.000000e+00)
  %556 = select <8 x i1> %555, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %557 = fmul <8 x double> %553, %556
  %558 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %559 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %560 = fcmp olt <8 x double> %558, %559
  %561 = select <8 x i1> %560, <8 x double> %558, <8 x double> %559
  %562 = fcmp olt <8 x double> %561, %557
  %563 = select <8 x i1> %562, <8 x double> %561, <8 x double> %557
  %564 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %565 = fmul <8 x double> %564, splat (double 5.000000e-01)
  %566 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %567 = load <8 x i64>, ptr %140, align 64, !tbaa !26
  %568 = fneg <8 x double> %565
  %569 = icmp eq <8 x i64> %567, zeroinitializer
  %570 = select <8 x i1> %569, <8 x double> %568, <8 x double> %565
  %571 = fadd <8 x double> %566, %570
  %572 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %573 = fsub <8 x double> %571, %572
  %574 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %575 = select <8 x i1> %569, <8 x double> zeroinitializer, <8 x double> %574
  %576 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %577 = fsub <8 x double> %575, %576
  %578 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %579 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %580 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %581 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %580, <8 x double> %572, <8 x double> %579)
  %582 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %583 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %578, <8 x double> %581, <8 x double> %582)
  %584 = fdiv <8 x double> %577, %583
  %585 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %586 = fsub <8 x double> %572, %585
  %587 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %588 = fdiv <8 x double> %586, %587
  %589 = fsub <8 x double> %584, %588
  %590 = fdiv <8 x double> %589, %587
  %591 = fdiv <8 x double> %573, %584
  %592 = load <8 x i64>, ptr %149, align 64, !tbaa !26
  %593 = load <8 x i64>, ptr %150, align 64, !tbaa !26
  %594 = or <8 x i64> %593, %592
  %595 = icmp eq <8 x i64> %594, zeroinitializer
  %596 = select <8 x i1> %595, <8 x double> %590, <8 x double> zeroinitializer
  %597 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %596, <8 x double> %591, <8 x double> %584)
  %598 = fdiv <8 x double> %573, %597
  %599 = fcmp ule <8 x double> %598, zeroinitializer
  %600 = select <8 x i1> %599, <8 x double> %591, <8 x double> %598
  %601 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %602 = fcmp une <8 x double> %601, zeroinitializer
  %603 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %604 = fcmp une <8 x double> %603, zeroinitializer
  %605 = fcmp ule <8 x double> %574, zeroinitializer
  %606 = or <8 x i1> %605, %602
  %607 = fcmp ule <8 x double> %591, zeroinitializer
  %608 = or <8 x i1> %607, %606
  %609 = or <8 x i1> %604, %608
  %610 = select <8 x i1> %609, <8 x double> splat (double 1.000000e+09), <8 x double> %600
  %611 = icmp sgt i64 %546, 0
  br i1 %611, label %612, label %680

612:                                              ; preds = %547
  %613 = load ptr, ptr %126, align 8, !tbaa !28
  %614 = fmul <8 x double> %587, splat (double 3.000000e+00)
  br label %615

615:                                              ; preds = %612, %615
  %616 = phi <8 x double> [ %610, %612 ], [ %677, %615 ]
  %617 = phi i64 [ 0, %612 ], [ %678, %615 ]
  %618 = getelementptr inbounds nuw %struct.Piece, ptr %613, i64 %617
  %619 = getelementptr inbounds nuw i8, ptr %618, i64 4288
  %620 = load <8 x double>, ptr %619, align 64, !tbaa !26
  %621 = getelementptr inbounds nuw i8, ptr %618, i64 1856
  %622 = load <8 x double>, ptr %621, align 64, !tbaa !26
  %623 = fsub <8 x double> %620, %622
  %624 = getelementptr inbounds nuw i8, ptr %618, i64 1216
  %625 = load <8 x double>, ptr %624, align 64, !tbaa !26
  %626 = fmul <8 x double> %623, %625
  %627 = getelementptr inbounds nuw i8, ptr %618, i64 1984
  %628 = load <8 x double>, ptr %627, align 64, !tbaa !26
  %629 = getelementptr inbounds nuw i8, ptr %618, i64 4544
  %630 = load <8 x double>, ptr %629, align 64, !tbaa !26
  %631 = fsub <8 x double> %628, %630
  %632 = getelementptr inbounds nuw i8, ptr %618, i64 9280
  %633 = load <8 x i64>, ptr %632, align 64, !tbaa !26
  %634 = getelementptr inbounds nuw i8, ptr %618, i64 8576
  %635 = load <8 x double>, ptr %634, align 64, !tbaa !26
  %636 = fcmp une <8 x double> %635, splat (double 1.000000e+00)
  %637 = select <8 x i1> %636, <8 x double> %626, <8 x double> %631
  %638 = getelementptr inbounds nuw i8, ptr %618, i64 4352
  %639 = load <8 x double>, ptr %638, align 64, !tbaa !26
  %640 = icmp eq <8 x i64> %633, zeroinitializer
  %641 = select <8 x i1> %640, <8 x double> %639, <8 x double> %637
  %642 = getelementptr inbounds nuw i8, ptr %618, i64 6464
  %643 = load <8 x double>, ptr %642, align 64, !tbaa !26
  %644 = getelementptr inbounds nuw i8, ptr %618, i64 6528
  %645 = load <8 x double>, ptr %644, align 64, !tbaa !26
  %646 = fadd <8 x double> %643, %645
  %647 = getelementptr inbounds nuw i8, ptr %618, i64 8448
  %648 = load <8 x double>, ptr %647, align 64, !tbaa !26
  %649 = fdiv <8 x double> %648, %587
  %650 = select <8 x i1> %640, <8 x double> %649, <8 x double> zeroinitializer
  %651 = fsub <8 x double> %646, %650
  %652 = fdiv <8 x double> %641, %651
  %653 = getelementptr inbounds nuw i8, ptr %618, i64 5248
  %654 = load <8 x double>, ptr %653, align 64, !tbaa !26
  %655 = fsub <8 x double> %654, %639
  %656 = fdiv <8 x double> %655, %587
  %657 = getelementptr inbounds nuw i8, ptr %618, i64 9344
  %658 = load <8 x i64>, ptr %657, align 64, !tbaa !26
  %659 = or <8 x i64> %658, %633
  %660 = fcmp ule <8 x double> %652, %614
  %661 = fsub <8 x double> %651, %656
  %662 = icmp eq <8 x i64> %659, zeroinitializer
  %663 = select <8 x i1> %660, <8 x i1> %662, <8 x i1> zeroinitializer
  %664 = select <8 x i1> %663, <8 x double> %661, <8 x double> zeroinitializer
  %665 = fdiv <8 x double> %652, %587
  %666 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %664, <8 x double> %665, <8 x double> %651)
  %667 = fdiv <8 x double> %641, %666
  %668 = fcmp ule <8 x double> %667, zeroinitializer
  %669 = select <8 x i1> %668, <8 x double> %652, <8 x double> %667
  %670 = fcmp ule <8 x double> %641, zeroinitializer
  %671 = fcmp ule <8 x double> %651, zeroinitializer
  %672 = or <8 x i1> %670, %671
  %673 = fcmp ogt <8 x double> %669, splat (double 1.000000e-03)
  %674 = select <8 x i1> %673, <8 x double> %669, <8 x double> splat (double 1.000000e-03)
  %675 = select <8 x i1> %672, <8 x double> splat (double 1.000000e+09), <8 x double> %674
  %676 = fcmp olt <8 x double> %616, %675
  %677 = select <8 x i1> %676, <8 x double> %616, <8 x double> %675
  %678 = add nuw nsw i64 %617, 1
  %679 = icmp eq i64 %678, %546
  br i1 %679, label %680, label %615, !llvm.loop !60

680:                                              ; preds = %615, %547
  %681 = phi <8 x double> [ %610, %547 ], [ %677, %615 ]
  %682 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %681)
  %683 = insertelement <8 x double> poison, double %682, i64 0
  %684 = shufflevector <8 x double> %683, <8 x double> poison, <8 x i32> zeroinitializer
  %685 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %686 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %687 = fadd <8 x double> %685, %686
  %688 = fsub <8 x double> %687, %550
  %689 = fmul <8 x double> %684, splat (double 1.050000e+00)
  %690 = fcmp ugt <8 x double> %688, %689
  %691 = select <8 x i1> %690, <8 x double> %684, <8 x double> %688
  %692 = fmul <8 x double> %563, splat (double 0x3FF000010C6F7A0B)
  %693 = fcmp ole <8 x double> %691, %692
  %694 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %695 = fcmp ogt <8 x double> %694, %563
  %696 = select <8 x i1> %695, <8 x double> %694, <8 x double> %563
  %697 = icmp ne <8 x i64> %543, zeroinitializer
  %698 = select <8 x i1> %693, <8 x i1> %697, <8 x i1> zeroinitializer
  %699 = select <8 x i1> %698, <8 x double> %696, <8 x double> %694
  store <8 x double> %699, ptr %156, align 64, !tbaa !26
  %700 = fmul <8 x double> %563, splat (double 2.000000e+00)
  %701 = fcmp uge <8 x double> %691, %700
  %702 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %703 = fcmp une <8 x double> %702, zeroinitializer
  %704 = or <8 x i1> %703, %701
  %705 = fmul <8 x double> %691, splat (double 5.000000e-01)
  %706 = select <8 x i1> %704, <8 x double> %563, <8 x double> %705
  %707 = select <8 x i1> %693, <8 x double> %691, <8 x double> %706
  %708 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %709 = icmp eq <8 x i64> %543, zeroinitializer
  %710 = select <8 x i1> %709, <8 x double> %708, <8 x double> %707
  store <8 x double> %710, ptr %157, align 64, !tbaa !26
  %711 = fdiv <8 x double> splat (double 1.000000e+00), %710
  %712 = fneg <8 x double> %711
  %713 = fdiv <8 x double> %710, %587
  %714 = fadd <8 x double> %713, splat (double 1.000000e+00)
  %715 = fdiv <8 x double> splat (double 1.000000e+00), %714
  %716 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %713, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %717 = fmul <8 x double> %716, %715
  %718 = fmul <8 x double> %711, %717
  %719 = fneg <8 x double> %714
  %720 = fmul <8 x double> %711, %719
  %721 = fmul <8 x double> %713, %713
  %722 = fmul <8 x double> %721, %715
  %723 = fmul <8 x double> %711, %722
  %724 = fmul <8 x double> %710, %714
  %725 = icmp eq <8 x i64> %592, zeroinitializer
  %726 = select <8 x i1> %725, <8 x double> %718, <8 x double> %711
  %727 = select <8 x i1> %725, <8 x double> %720, <8 x double> %712
  %728 = select <8 x i1> %725, <8 x double> %723, <8 x double> zeroinitializer
  %729 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %730 = select <8 x i1> %709, <8 x double> %729, <8 x double> %726
  store <8 x double> %730, ptr %159, align 64, !tbaa !26
  %731 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %732 = select <8 x i1> %709, <8 x double> %731, <8 x double> %727
  store <8 x double> %732, ptr %160, align 64, !tbaa !26
  %733 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %734 = select <8 x i1> %709, <8 x double> %733, <8 x double> %728
  store <8 x double> %734, ptr %161, align 64, !tbaa !26
  %735 = select <8 x i1> %725, <8 x double> %713, <8 x double> zeroinitializer
  %736 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %735, <8 x double> %586, <8 x double> %572)
  %737 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %738 = select <8 x i1> %709, <8 x double> %737, <8 x double> %736
  %739 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %740 = load <8 x double>, ptr %240, align 64, !tbaa !26
  %741 = fsub <8 x double> %739, %740
  %742 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %735, <8 x double> %741, <8 x double> %739)
  %743 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %744 = select <8 x i1> %709, <8 x double> %743, <8 x double> %742
  store <8 x double> %744, ptr %238, align 64, !tbaa !26
  %745 = load <8 x double>, ptr %242, align 64, !tbaa !26
  %746 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %747 = fsub <8 x double> %745, %746
  %748 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %735, <8 x double> %747, <8 x double> %745)
  %749 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %750 = select <8 x i1> %709, <8 x double> %749, <8 x double> %748
  store <8 x double> %750, ptr %241, align 64, !tbaa !26
  %751 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %752 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %753 = fsub <8 x double> %751, %752
  %754 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %735, <8 x double> %753, <8 x double> %751)
  %755 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %756 = select <8 x i1> %709, <8 x double> %755, <8 x double> %754
  store <8 x double> %756, ptr %244, align 64, !tbaa !26
  %757 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %758 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %759 = fsub <8 x double> %757, %758
  %760 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %735, <8 x double> %759, <8 x double> %757)
  %761 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %762 = select <8 x i1> %709, <8 x double> %761, <8 x double> %760
  store <8 x double> %762, ptr %247, align 64, !tbaa !26
  %763 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %764 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %765 = fsub <8 x double> %763, %764
  %766 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %735, <8 x double> %765, <8 x double> %763)
  %767 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %768 = select <8 x i1> %709, <8 x double> %767, <8 x double> %766
  store <8 x double> %768, ptr %250, align 64, !tbaa !26
  %769 = fdiv <8 x double> %724, %716
  %770 = load <8 x i64>, ptr %140, align 64, !tbaa !26
  %771 = icmp eq <8 x i64> %770, zeroinitializer
  %772 = select <8 x i1> %771, <8 x double> zeroinitializer, <8 x double> %574
  %773 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %774 = fsub <8 x double> %772, %773
  %775 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %776 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %580, <8 x double> %775, <8 x double> %579)
  %777 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %578, <8 x double> %776, <8 x double> %582)
  %778 = fdiv <8 x double> %774, %777
  %779 = load <8 x i64>, ptr %150, align 64, !tbaa !26
  %780 = load <8 x i64>, ptr %149, align 64, !tbaa !26
  %781 = or <8 x i64> %780, %779
  %782 = and <8 x i64> %781, %543
  %783 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %710, <8 x double> %778, <8 x double> %775)
  %784 = icmp eq <8 x i64> %782, zeroinitializer
  %785 = select <8 x i1> %604, <8 x i1> splat (i1 true), <8 x i1> %784
  %786 = select <8 x i1> %785, <8 x double> %738, <8 x double> %783
  store <8 x double> %786, ptr %162, align 64, !tbaa !26
  %787 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %788 = select <8 x i1> %709, <8 x double> %787, <8 x double> %774
  store <8 x double> %788, ptr %163, align 64, !tbaa !26
  %789 = xor <8 x i64> %780, splat (i64 -1)
  %790 = and <8 x i64> %779, %789
  store <8 x i64> %790, ptr %150, align 64, !tbaa !26
  %791 = load i64, ptr %153, align 8, !tbaa !20
  %792 = icmp sgt i64 %791, 0
  br i1 %792, label %795, label %1372

793:                                              ; preds = %1018
  %794 = icmp sgt i64 %1020, 0
  br i1 %794, label %1035, label %1372

795:                                              ; preds = %680, %1018
  %796 = phi i64 [ %1019, %1018 ], [ 0, %680 ]
  %797 = load ptr, ptr %126, align 8, !tbaa !28
  %798 = getelementptr inbounds nuw %struct.Piece, ptr %797, i64 %796
  %799 = getelementptr inbounds nuw i8, ptr %798, i64 9344
  %800 = load <8 x i64>, ptr %799, align 64, !tbaa !26
  %801 = icmp eq <8 x i64> %800, zeroinitializer
  %802 = select <8 x i1> %801, <8 x double> %718, <8 x double> %711
  %803 = select <8 x i1> %801, <8 x double> %720, <8 x double> %712
  %804 = select <8 x i1> %801, <8 x double> %723, <8 x double> zeroinitializer
  %805 = select <8 x i1> %801, <8 x double> %769, <8 x double> %710
  %806 = getelementptr inbounds nuw i8, ptr %798, i64 6016
  %807 = load <8 x double>, ptr %806, align 64, !tbaa !26
  %808 = select <8 x i1> %709, <8 x double> %807, <8 x double> %802
  store <8 x double> %808, ptr %806, align 64, !tbaa !26
  %809 = getelementptr inbounds nuw i8, ptr %798, i64 6080
  %810 = load <8 x double>, ptr %809, align 64, !tbaa !26
  %811 = select <8 x i1> %709, <8 x double> %810, <8 x double> %803
  store <8 x double> %811, ptr %809, align 64, !tbaa !26
  %812 = getelementptr inbounds nuw i8, ptr %798, i64 6144
  %813 = load <8 x double>, ptr %812, align 64, !tbaa !26
  %814 = select <8 x i1> %709, <8 x double> %813, <8 x double> %804
  store <8 x double> %814, ptr %812, align 64, !tbaa !26
  %815 = getelementptr inbounds nuw i8, ptr %798, i64 6208
  %816 = load <8 x double>, ptr %815, align 64, !tbaa !26
  %817 = select <8 x i1> %709, <8 x double> %816, <8 x double> %805
  store <8 x double> %817, ptr %815, align 64, !tbaa !26
  %818 = select <8 x i1> %801, <8 x double> %713, <8 x double> zeroinitializer
  %819 = getelementptr inbounds nuw i8, ptr %798, i64 3328
  %820 = getelementptr inbounds nuw i8, ptr %798, i64 4224
  %821 = getelementptr inbounds nuw i8, ptr %798, i64 5120
  br label %1022

822:                                              ; preds = %1022
  %823 = getelementptr inbounds nuw i8, ptr %798, i64 6528
  %824 = getelementptr inbounds nuw i8, ptr %798, i64 3904
  %825 = load <8 x double>, ptr %824, align 64, !tbaa !26
  %826 = fcmp ogt <8 x double> %825, zeroinitializer
  %827 = select <8 x i1> %826, <8 x double> %825, <8 x double> zeroinitializer
  %828 = load <8 x double>, ptr %823, align 64, !tbaa !26
  %829 = select <8 x i1> %709, <8 x double> %828, <8 x double> %827
  store <8 x double> %829, ptr %823, align 64, !tbaa !26
  %830 = getelementptr inbounds nuw i8, ptr %798, i64 6272
  %831 = load <8 x double>, ptr %830, align 64, !tbaa !26
  %832 = select <8 x i1> %709, <8 x double> %831, <8 x double> %818
  store <8 x double> %832, ptr %830, align 64, !tbaa !26
  %833 = load <8 x double>, ptr %809, align 64, !tbaa !26
  %834 = getelementptr inbounds nuw i8, ptr %798, i64 1152
  %835 = load <8 x double>, ptr %834, align 64, !tbaa !26
  %836 = fmul <8 x double> %833, %835
  %837 = load <8 x double>, ptr %812, align 64, !tbaa !26
  %838 = fmul <8 x double> %835, %837
  %839 = getelementptr inbounds nuw i8, ptr %798, i64 9696
  %840 = load ptr, ptr %839, align 32, !tbaa !50
  %841 = getelementptr inbounds nuw i8, ptr %798, i64 9704
  %842 = load ptr, ptr %841, align 8, !tbaa !61
  %843 = load i64, ptr %116, align 8, !tbaa !22
  %844 = icmp sgt i64 %843, 0
  br i1 %844, label %845, label %876

845:                                              ; preds = %822
  %846 = getelementptr inbounds nuw i8, ptr %798, i64 9648
  %847 = getelementptr inbounds nuw i8, ptr %798, i64 9656
  %848 = getelementptr inbounds nuw i8, ptr %798, i64 9664
  br label %849

849:                                              ; preds = %845, %849
  %850 = phi i64 [ 0, %845 ], [ %851, %849 ]
  %851 = add nuw nsw i64 %850, 1
  %852 = getelementptr inbounds nuw <8 x double>, ptr %840, i64 %851
  %853 = load <8 x double>, ptr %852, align 64, !tbaa !26
  %854 = getelementptr inbounds nuw <8 x double>, ptr %840, i64 %850
  %855 = load <8 x double>, ptr %854, align 64, !tbaa !26
  %856 = fsub <8 x double> %853, %855
  %857 = load ptr, ptr %846, align 16, !tbaa !51
  %858 = getelementptr inbounds nuw <8 x double>, ptr %857, i64 %850
  %859 = load <8 x double>, ptr %858, align 64, !tbaa !26
  %860 = fmul <8 x double> %856, %859
  %861 = getelementptr inbounds nuw <8 x double>, ptr %842, i64 %851
  %862 = load <8 x double>, ptr %861, align 64, !tbaa !26
  %863 = getelementptr inbounds nuw <8 x double>, ptr %842, i64 %850
  %864 = load <8 x double>, ptr %863, align 64, !tbaa !26
  %865 = fsub <8 x double> %862, %864
  %866 = load ptr, ptr %847, align 8, !tbaa !62
  %867 = getelementptr inbounds nuw <8 x double>, ptr %866, i64 %850
  %868 = load <8 x double>, ptr %867, align 64, !tbaa !26
  %869 = fmul <8 x double> %865, %868
  %870 = fmul <8 x double> %838, %869
  %871 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %836, <8 x double> %860, <8 x double> %870)
  %872 = load ptr, ptr %848, align 64, !tbaa !63
  %873 = getelementptr inbounds nuw <8 x double>, ptr %872, i64 %850
  store <8 x double> %871, ptr %873, align 64, !tbaa !26
  %874 = load i64, ptr %116, align 8, !tbaa !22
  %875 = icmp slt i64 %851, %874
  br i1 %875, label %849, label %876, !llvm.loop !64

876:                                              ; preds = %849, %822
  %877 = getelementptr inbounds nuw i8, ptr %798, i64 2048
  %878 = load <8 x double>, ptr %877, align 64, !tbaa !26
  %879 = fcmp ogt <8 x double> %878, zeroinitializer
  %880 = bitcast <8 x i1> %879 to i8
  %881 = icmp eq i8 %880, 0
  br i1 %881, label %882, label %886

882:                                              ; preds = %876
  %883 = getelementptr inbounds nuw i8, ptr %798, i64 8448
  %884 = load <8 x double>, ptr %883, align 64, !tbaa !26
  %885 = select <8 x i1> %709, <8 x double> %884, <8 x double> zeroinitializer
  store <8 x double> %885, ptr %883, align 64, !tbaa !26
  br label %1018

886:                                              ; preds = %876
  %887 = getelementptr inbounds nuw i8, ptr %798, i64 704
  %888 = load <8 x double>, ptr %887, align 64, !tbaa !26
  %889 = getelementptr inbounds nuw i8, ptr %798, i64 768
  %890 = load <8 x double>, ptr %889, align 64, !tbaa !26
  %891 = getelementptr inbounds nuw i8, ptr %798, i64 832
  %892 = load <8 x double>, ptr %891, align 64, !tbaa !26
  %893 = getelementptr inbounds nuw i8, ptr %798, i64 896
  %894 = load <8 x double>, ptr %893, align 64, !tbaa !26
  %895 = getelementptr inbounds nuw i8, ptr %798, i64 1920
  %896 = load <8 x double>, ptr %895, align 64, !tbaa !26
  %897 = getelementptr inbounds nuw i8, ptr %798, i64 2112
  %898 = load <8 x double>, ptr %897, align 64, !tbaa !26
  %899 = getelementptr inbounds nuw i8, ptr %798, i64 2176
  %900 = load <8 x double>, ptr %899, align 64, !tbaa !26
  %901 = getelementptr inbounds nuw i8, ptr %798, i64 2240
  %902 = load <8 x double>, ptr %901, align 64, !tbaa !26
  %903 = fmul <8 x double> %890, %902
  %904 = fmul <8 x double> %894, %902
  %905 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %906 = fneg <8 x double> %905
  %907 = fdiv <8 x double> %906, %898
  %908 = fcmp ogt <8 x double> %907, splat (double -7.000000e+02)
  %909 = select <8 x i1> %908, <8 x double> %907, <8 x double> splat (double -7.000000e+02)
  %910 = fcmp olt <8 x double> %909, splat (double 7.000000e+02)
  %911 = select <8 x i1> %910, <8 x double> %909, <8 x double> splat (double 7.000000e+02)
  %912 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %911, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %913 = fadd <8 x double> %912, splat (double 0xC338000000000000)
  %914 = fneg <8 x double> %913
  %915 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %914, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %911)
  %916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %914, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %915)
  %917 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %916, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %918 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %917, <8 x double> %916, <8 x double> splat (double 0x3E5AE64567F544E4))
  %919 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %918, <8 x double> %916, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %920 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %919, <8 x double> %916, <8 x double> splat (double 0x3EC71DE3A556C734))
  %921 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %920, <8 x double> %916, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %922 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %921, <8 x double> %916, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %923 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %922, <8 x double> %916, <8 x double> splat (double 0x3F56C16C16C16C17))
  %924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %923, <8 x double> %916, <8 x double> splat (double 0x3F81111111111111))
  %925 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %924, <8 x double> %916, <8 x double> splat (double 0x3FA5555555555555))
  %926 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %925, <8 x double> %916, <8 x double> splat (double 0x3FC5555555555555))
  %927 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %926, <8 x double> %916, <8 x double> splat (double 5.000000e-01))
  %928 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %927, <8 x double> %916, <8 x double> splat (double 1.000000e+00))
  %929 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %928, <8 x double> %916, <8 x double> splat (double 1.000000e+00))
  %930 = fmul <8 x double> %888, %902
  %931 = fmul <8 x double> %892, %902
  %932 = fmul <8 x double> %900, %902
  %933 = bitcast <8 x double> %912 to <8 x i64>
  %934 = shl <8 x i64> %933, splat (i64 52)
  %935 = bitcast <8 x double> %929 to <8 x i64>
  %936 = add <8 x i64> %934, %935
  %937 = bitcast <8 x i64> %936 to <8 x double>
  %938 = fsub <8 x double> splat (double 1.000000e+00), %937
  %939 = getelementptr inbounds nuw i8, ptr %798, i64 5056
  %940 = load <8 x double>, ptr %939, align 64, !tbaa !26
  %941 = fsub <8 x double> %940, %896
  %942 = getelementptr inbounds nuw i8, ptr %798, i64 9552
  %943 = load ptr, ptr %942, align 16, !tbaa !47
  %944 = getelementptr inbounds nuw i8, ptr %798, i64 9560
  %945 = load ptr, ptr %944, align 8, !tbaa !65
  %946 = getelementptr inbounds nuw i8, ptr %798, i64 9576
  %947 = load ptr, ptr %946, align 8, !tbaa !49
  %948 = getelementptr inbounds nuw i8, ptr %798, i64 9616
  %949 = load ptr, ptr %948, align 16, !tbaa !48
  %950 = load <8 x double>, ptr %830, align 64, !tbaa !26
  %951 = fmul <8 x double> %950, splat (double 5.000000e-01)
  %952 = getelementptr inbounds nuw i8, ptr %798, i64 9568
  %953 = load ptr, ptr %952, align 32, !tbaa !66
  %954 = getelementptr inbounds nuw i8, ptr %798, i64 9472
  %955 = load i64, ptr %954, align 64, !tbaa !31
  %956 = load i64, ptr %115, align 16, !tbaa !21
  %957 = icmp slt i64 %955, %956
  br i1 %957, label %972, label %958

958:                                              ; preds = %972, %886
  %959 = phi <8 x double> [ zeroinitializer, %886 ], [ %1007, %972 ]
  %960 = phi <8 x double> [ zeroinitializer, %886 ], [ %1014, %972 ]
  %961 = getelementptr inbounds nuw i8, ptr %798, i64 4288
  %962 = load <8 x double>, ptr %961, align 64, !tbaa !26
  %963 = fsub <8 x double> %962, %940
  %964 = fmul <8 x double> %959, %963
  %965 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %960, <8 x double> %941, <8 x double> %964)
  %966 = getelementptr inbounds nuw i8, ptr %798, i64 8448
  %967 = getelementptr inbounds nuw i8, ptr %798, i64 1216
  %968 = load <8 x double>, ptr %967, align 64, !tbaa !26
  %969 = fmul <8 x double> %968, %965
  %970 = load <8 x double>, ptr %966, align 64, !tbaa !26
  %971 = select <8 x i1> %709, <8 x double> %970, <8 x double> %969
  store <8 x double> %971, ptr %966, align 64, !tbaa !26
  br label %1018

972:                                              ; preds = %886, %972
  %973 = phi <8 x double> [ %1014, %972 ], [ zeroinitializer, %886 ]
  %974 = phi i64 [ %1015, %972 ], [ %955, %886 ]
  %975 = getelementptr inbounds <8 x double>, ptr %943, i64 %974
  %976 = load <8 x double>, ptr %975, align 64, !tbaa !26
  %977 = getelementptr inbounds <8 x double>, ptr %945, i64 %974
  %978 = load <8 x double>, ptr %977, align 64, !tbaa !26
  %979 = fsub <8 x double> %976, %978
  %980 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %951, <8 x double> %979, <8 x double> %976)
  %981 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %980, <8 x double> %904, <8 x double> %931)
  %982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %980, <8 x double> %981, <8 x double> %903)
  %983 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %980, <8 x double> %982, <8 x double> %930)
  %984 = fmul <8 x double> %980, %983
  %985 = fsub <8 x double> %984, %932
  %986 = fcmp ogt <8 x double> %985, splat (double -5.000000e+00)
  %987 = select <8 x i1> %986, <8 x double> %985, <8 x double> splat (double -5.000000e+00)
  %988 = fcmp olt <8 x double> %987, splat (double 5.000000e+00)
  %989 = select <8 x i1> %988, <8 x double> %987, <8 x double> splat (double 5.000000e+00)
  %990 = fmul <8 x double> %989, %989
  %991 = fadd <8 x double> %990, splat (double 3.780000e+02)
  %992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %990, <8 x double> %991, <8 x double> splat (double 1.732500e+04))
  %993 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %990, <8 x double> %992, <8 x double> splat (double 1.351350e+05))
  %994 = fmul <8 x double> %989, %993
  %995 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %990, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %996 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %990, <8 x double> %995, <8 x double> splat (double 6.237000e+04))
  %997 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %990, <8 x double> %996, <8 x double> splat (double 1.351350e+05))
  %998 = fdiv <8 x double> %994, %997
  %999 = fadd <8 x double> %998, splat (double 1.000000e+00)
  %1000 = fmul <8 x double> %878, %999
  %1001 = getelementptr inbounds <8 x double>, ptr %947, i64 %974
  %1002 = load <8 x double>, ptr %1001, align 64, !tbaa !26
  %1003 = fadd <8 x double> %1002, splat (double -1.000000e+00)
  %1004 = fadd <8 x double> %1003, %1000
  %1005 = fcmp ogt <8 x double> %1004, zeroinitializer
  %1006 = select <8 x i1> %1005, <8 x double> %1004, <8 x double> zeroinitializer
  %1007 = fmul <8 x double> %938, %1006
  %1008 = fsub <8 x double> %1002, %1007
  %1009 = getelementptr inbounds <8 x double>, ptr %953, i64 %974
  %1010 = load <8 x double>, ptr %1009, align 64, !tbaa !26
  %1011 = select <8 x i1> %709, <8 x double> %1010, <8 x double> %1008
  store <8 x double> %1011, ptr %1009, align 64, !tbaa !26
  %1012 = getelementptr inbounds <8 x double>, ptr %949, i64 %974
  %1013 = load <8 x double>, ptr %1012, align 64, !tbaa !26
  %1014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1007, <8 x double> %1013, <8 x double> %973)
  %1015 = add nsw i64 %974, 1
  %1016 = load i64, ptr %115, align 16, !tbaa !21
  %1017 = icmp slt i64 %1015, %1016
  br i1 %1017, label %972, label %958, !llvm.loop !67

1018:                                             ; preds = %882, %958
  %1019 = add nuw nsw i64 %796, 1
  %1020 = load i64, ptr %153, align 8, !tbaa !20
  %1021 = icmp slt i64 %1019, %1020
  br i1 %1021, label %795, label %793, !llvm.loop !68

1022:                                             ; preds = %795, %1022
  %1023 = phi i64 [ 0, %795 ], [ %1033, %1022 ]
  %1024 = getelementptr inbounds nuw [14 x <8 x double>], ptr %819, i64 0, i64 %1023
  %1025 = getelementptr inbounds nuw [14 x <8 x double>], ptr %820, i64 0, i64 %1023
  %1026 = load <8 x double>, ptr %1025, align 64, !tbaa !26
  %1027 = getelementptr inbounds nuw [14 x <8 x double>], ptr %821, i64 0, i64 %1023
  %1028 = load <8 x double>, ptr %1027, align 64, !tbaa !26
  %1029 = fsub <8 x double> %1026, %1028
  %1030 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %818, <8 x double> %1029, <8 x double> %1026)
  %1031 = load <8 x double>, ptr %1024, align 64, !tbaa !26
  %1032 = select <8 x i1> %709, <8 x double> %1031, <8 x double> %1030
  store <8 x double> %1032, ptr %1024, align 64, !tbaa !26
  %1033 = add nuw nsw i64 %1023, 1
  %1034 = icmp eq i64 %1033, 13
  br i1 %1034, label %822, label %1022, !llvm.loop !69

1035:                                             ; preds = %793, %1353
  %1036 = phi i64 [ %1369, %1353 ], [ 0, %793 ]
  %1037 = load ptr, ptr %126, align 8, !tbaa !28
  %1038 = getelementptr inbounds nuw %struct.Piece, ptr %1037, i64 %1036
  %1039 = getelementptr inbounds nuw i8, ptr %1038, i64 3328
  %1040 = load <8 x double>, ptr %1039, align 64, !tbaa !26
  %1041 = getelementptr inbounds nuw i8, ptr %1038, i64 4224
  %1042 = load <8 x double>, ptr %1041, align 64, !tbaa !26
  %1043 = fcmp olt <8 x double> %1040, %1042
  %1044 = select <8 x i1> %1043, <8 x double> %1040, <8 x double> %1042
  %1045 = load <8 x double>, ptr %1038, align 64, !tbaa !26
  %1046 = fmul <8 x double> %1045, splat (double 3.000000e-01)
  %1047 = fcmp ogt <8 x double> %1044, %1046
  %1048 = select <8 x i1> %1047, <8 x double> %1044, <8 x double> %1046
  %1049 = select <8 x i1> %709, <8 x double> %1040, <8 x double> %1048
  store <8 x double> %1049, ptr %1039, align 64, !tbaa !26
  %1050 = getelementptr inbounds nuw i8, ptr %1038, i64 3456
  %1051 = load <8 x double>, ptr %1050, align 64, !tbaa !26, !noalias !70
  %1052 = getelementptr inbounds nuw i8, ptr %1038, i64 8640
  %1053 = load <8 x double>, ptr %1052, align 64, !tbaa !26, !noalias !70
  %1054 = fmul <8 x double> %1051, %1053
  %1055 = fcmp ogt <8 x double> %1054, zeroinitializer
  %1056 = select <8 x i1> %1055, <8 x double> %1054, <8 x double> zeroinitializer
  %1057 = fcmp uge <8 x double> %1056, splat (double 1.000000e+00)
  %1058 = select <8 x i1> %1057, <8 x double> splat (double 1.000000e+00), <8 x double> %1056
  %1059 = getelementptr inbounds nuw i8, ptr %1038, i64 9408
  %1060 = load <8 x i64>, ptr %1059, align 64, !tbaa !26, !noalias !70
  %1061 = load <8 x double>, ptr %164, align 64, !tbaa !26, !noalias !70
  %1062 = getelementptr inbounds nuw i8, ptr %1038, i64 3584
  %1063 = load <8 x double>, ptr %1062, align 64, !tbaa !26, !noalias !70
  %1064 = icmp eq <8 x i64> %1060, zeroinitializer
  %1065 = select <8 x i1> %1064, <8 x double> %1063, <8 x double> %1061
  %1066 = getelementptr inbounds nuw i8, ptr %1038, i64 3968
  %1067 = load <8 x double>, ptr %1066, align 64, !tbaa !26, !noalias !70
  %1068 = fsub <8 x double> splat (double 1.000000e+00), %1058
  %1069 = getelementptr inbounds nuw i8, ptr %1038, i64 2368
  %1070 = load <8 x double>, ptr %1069, align 64, !tbaa !26, !noalias !70
  %1071 = getelementptr inbounds nuw i8, ptr %1038, i64 9280
  %1072 = load <8 x i64>, ptr %1071, align 64, !tbaa !26, !noalias !70
  %1073 = fsub <8 x double> %1045, %1049
  %1074 = getelementptr inbounds nuw i8, ptr %1038, i64 8704
  %1075 = load <8 x double>, ptr %1074, align 64, !tbaa !26, !noalias !70
  %1076 = fmul <8 x double> %1073, %1075
  %1077 = icmp eq <8 x i64> %1072, zeroinitializer
  %1078 = select <8 x i1> %1077, <8 x double> zeroinitializer, <8 x double> %1076
  %1079 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1068, <8 x double> %1070, <8 x double> %1078)
  %1080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1067, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1081 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1067, <8 x double> %1080, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1082 = fdiv <8 x double> splat (double 1.000000e+00), %1081
  %1083 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1065, <8 x double> %1079, <8 x double> splat (double 1.000000e+00))
  %1084 = fdiv <8 x double> splat (double 1.000000e+00), %1083
  %1085 = load <8 x double>, ptr %165, align 64, !tbaa !26, !noalias !70
  %1086 = load <8 x double>, ptr %162, align 64, !tbaa !26, !noalias !70
  %1087 = select <8 x i1> %1064, <8 x double> %1086, <8 x double> %1085
  %1088 = fsub <8 x double> %1087, %1067
  %1089 = fmul <8 x double> %1088, %1084
  %1090 = fmul <8 x double> %1065, %1089
  %1091 = getelementptr inbounds nuw i8, ptr %1038, i64 6016
  %1092 = load <8 x double>, ptr %1091, align 64, !tbaa !26, !noalias !70
  %1093 = getelementptr inbounds nuw i8, ptr %1038, i64 3648
  %1094 = load <8 x double>, ptr %1093, align 64, !tbaa !26, !noalias !70
  %1095 = getelementptr inbounds nuw i8, ptr %1038, i64 6080
  %1096 = load <8 x double>, ptr %1095, align 64, !tbaa !26, !noalias !70
  %1097 = getelementptr inbounds nuw i8, ptr %1038, i64 4544
  %1098 = load <8 x double>, ptr %1097, align 64, !tbaa !26, !noalias !70
  %1099 = fmul <8 x double> %1096, %1098
  %1100 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1092, <8 x double> %1094, <8 x double> %1099)
  %1101 = getelementptr inbounds nuw i8, ptr %1038, i64 6144
  %1102 = load <8 x double>, ptr %1101, align 64, !tbaa !26, !noalias !70
  %1103 = getelementptr inbounds nuw i8, ptr %1038, i64 5440
  %1104 = load <8 x double>, ptr %1103, align 64, !tbaa !26, !noalias !70
  %1105 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1102, <8 x double> %1104, <8 x double> %1100)
  %1106 = getelementptr inbounds nuw i8, ptr %1038, i64 8768
  %1107 = load <8 x double>, ptr %1106, align 64, !tbaa !26, !noalias !70
  %1108 = fmul <8 x double> %1075, %1107
  %1109 = fcmp ule <8 x double> %1058, zeroinitializer
  %1110 = or <8 x i1> %1057, %1109
  %1111 = fmul <8 x double> %1053, %1070
  %1112 = select <8 x i1> %1110, <8 x double> zeroinitializer, <8 x double> %1111
  %1113 = select <8 x i1> %1077, <8 x double> %1112, <8 x double> %1108
  %1114 = fmul <8 x double> %1065, %1090
  %1115 = fmul <8 x double> %1084, %1114
  %1116 = fmul <8 x double> %1082, %1115
  %1117 = fmul <8 x double> %1116, %1113
  %1118 = getelementptr inbounds nuw i8, ptr %1038, i64 6208
  %1119 = load <8 x double>, ptr %1118, align 64, !tbaa !26, !noalias !70
  %1120 = fmul <8 x double> %1119, %1117
  %1121 = fadd <8 x double> %1120, splat (double 1.000000e+00)
  %1122 = fdiv <8 x double> splat (double 1.000000e+00), %1121
  %1123 = getelementptr inbounds nuw i8, ptr %1038, i64 3840
  %1124 = load <8 x double>, ptr %1123, align 64, !tbaa !26, !noalias !70
  %1125 = fsub <8 x double> %1090, %1124
  %1126 = getelementptr inbounds nuw i8, ptr %1038, i64 6528
  %1127 = load <8 x double>, ptr %1126, align 64, !tbaa !26, !noalias !70
  %1128 = fsub <8 x double> %1105, %1127
  %1129 = fmul <8 x double> %1120, %1128
  %1130 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1125, <8 x double> %1082, <8 x double> %1129)
  %1131 = fmul <8 x double> %1130, %1122
  %1132 = getelementptr inbounds nuw i8, ptr %1038, i64 6464
  %1133 = load <8 x double>, ptr %1132, align 64, !tbaa !26, !noalias !70
  %1134 = fcmp ule <8 x double> %1133, zeroinitializer
  %1135 = fcmp ule <8 x double> %1131, zeroinitializer
  %1136 = or <8 x i1> %1134, %1135
  %1137 = select <8 x i1> %1136, <8 x double> zeroinitializer, <8 x double> %1131
  %1138 = getelementptr inbounds nuw i8, ptr %1038, i64 2560
  %1139 = load <8 x double>, ptr %1138, align 64, !tbaa !26, !noalias !70
  %1140 = fcmp ogt <8 x double> %1139, zeroinitializer
  %1141 = getelementptr inbounds nuw i8, ptr %1038, i64 1408
  %1142 = load <8 x double>, ptr %1141, align 64, !tbaa !26, !noalias !70
  %1143 = bitcast <8 x i1> %1140 to i8
  %1144 = icmp eq i8 %1143, 0
  br i1 %1144, label %1157, label %1145

1145:                                             ; preds = %1035
  %1146 = getelementptr inbounds nuw i8, ptr %1038, i64 4032
  %1147 = load <8 x double>, ptr %1146, align 64, !tbaa !26, !noalias !70
  %1148 = fadd <8 x double> %1089, %1147
  %1149 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1148)
  %1150 = fcmp ogt <8 x double> %1139, splat (double 1.000000e-09)
  %1151 = select <8 x i1> %1150, <8 x double> %1139, <8 x double> splat (double 1.000000e-09)
  %1152 = fdiv <8 x double> %1149, %1151
  %1153 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1152)
  %1154 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1153)
  %1155 = select <8 x i1> %1140, <8 x double> %1154, <8 x double> splat (double 1.000000e+00)
  %1156 = fmul <8 x double> %1142, %1155
  br label %1157

1157:                                             ; preds = %1035, %1145
  %1158 = phi <8 x double> [ %1156, %1145 ], [ %1142, %1035 ]
  %1159 = getelementptr inbounds nuw i8, ptr %1038, i64 4480
  %1160 = load <8 x double>, ptr %1159, align 64, !tbaa !26, !noalias !70
  %1161 = getelementptr inbounds nuw i8, ptr %1038, i64 5376
  %1162 = load <8 x double>, ptr %1161, align 64, !tbaa !26, !noalias !70
  %1163 = fmul <8 x double> %1102, %1162
  %1164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1096, <8 x double> %1160, <8 x double> %1163)
  %1165 = getelementptr inbounds nuw i8, ptr %1038, i64 1600
  %1166 = load <8 x double>, ptr %1165, align 64, !tbaa !26, !noalias !70
  %1167 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1166, <8 x double> %1092, <8 x double> splat (double 1.000000e+00))
  %1168 = fdiv <8 x double> splat (double 1.000000e+00), %1167
  %1169 = fmul <8 x double> %1084, %1089
  %1170 = fmul <8 x double> %1082, %1169
  %1171 = fmul <8 x double> %1170, %1122
  %1172 = select <8 x i1> %1136, <8 x double> zeroinitializer, <8 x double> %1171
  %1173 = getelementptr inbounds nuw i8, ptr %1038, i64 1472
  %1174 = load <8 x double>, ptr %1173, align 64, !tbaa !26, !noalias !70
  %1175 = fmul <8 x double> %1158, splat (double 2.500000e-01)
  %1176 = fmul <8 x double> %1079, %1175
  %1177 = fneg <8 x double> %1084
  %1178 = fmul <8 x double> %1176, %1177
  %1179 = select <8 x i1> %1140, <8 x double> %1178, <8 x double> splat (double -0.000000e+00)
  %1180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1174, <8 x double> %1172, <8 x double> %1179)
  %1181 = fadd <8 x double> %1127, %1137
  %1182 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1174, <8 x double> %1181, <8 x double> %1158)
  %1183 = fneg <8 x double> %1166
  %1184 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1183, <8 x double> %1164, <8 x double> %1182)
  %1185 = fneg <8 x double> %1065
  %1186 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1168, <8 x double> %1184, <8 x double> %1185)
  %1187 = fmul <8 x double> %1168, %1180
  %1188 = fcmp olt <8 x double> %1187, splat (double 8.000000e-01)
  %1189 = select <8 x i1> %1188, <8 x double> %1187, <8 x double> splat (double 8.000000e-01)
  %1190 = fsub <8 x double> splat (double 1.000000e+00), %1189
  %1191 = fdiv <8 x double> %1186, %1190
  %1192 = fadd <8 x double> %1065, %1191
  %1193 = getelementptr inbounds nuw i8, ptr %1038, i64 1536
  %1194 = load <8 x double>, ptr %1193, align 64, !tbaa !26, !noalias !70
  %1195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1183, <8 x double> %1164, <8 x double> %1194)
  %1196 = fmul <8 x double> %1168, %1195
  %1197 = fcmp olt <8 x double> %1192, %1196
  %1198 = select <8 x i1> %1197, <8 x double> %1192, <8 x double> %1196
  %1199 = select <8 x i1> %1064, <8 x double> %1198, <8 x double> %1061
  %1200 = fsub <8 x double> %1199, %1065
  %1201 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1172, <8 x double> %1200, <8 x double> %1137)
  %1202 = fcmp ogt <8 x double> %1201, zeroinitializer
  %1203 = select <8 x i1> %1202, <8 x double> %1201, <8 x double> zeroinitializer
  %1204 = select <8 x i1> %709, <8 x double> %1063, <8 x double> %1199
  store <8 x double> %1204, ptr %1062, align 64, !tbaa !26
  %1205 = select <8 x i1> %709, <8 x double> %1133, <8 x double> %1203
  store <8 x double> %1205, ptr %1132, align 64, !tbaa !26
  %1206 = fadd <8 x double> %1127, %1205
  %1207 = fneg <8 x double> %1096
  %1208 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1207, <8 x double> %1098, <8 x double> %1206)
  %1209 = fneg <8 x double> %1102
  %1210 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1209, <8 x double> %1104, <8 x double> %1208)
  %1211 = fmul <8 x double> %1119, %1210
  %1212 = getelementptr inbounds nuw i8, ptr %1038, i64 1984
  %1213 = load <8 x double>, ptr %1212, align 64, !tbaa !26, !noalias !73
  %1214 = fsub <8 x double> %1213, %1211
  %1215 = getelementptr inbounds nuw i8, ptr %1038, i64 4416
  %1216 = load <8 x double>, ptr %1215, align 64, !tbaa !26, !noalias !73
  %1217 = getelementptr inbounds nuw i8, ptr %1038, i64 8448
  %1218 = load <8 x double>, ptr %1217, align 64, !tbaa !26, !noalias !73
  %1219 = fsub <8 x double> %1216, %1218
  %1220 = getelementptr inbounds nuw i8, ptr %1038, i64 4288
  %1221 = load <8 x double>, ptr %1220, align 64, !tbaa !26, !noalias !73
  %1222 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1072)
  %1223 = icmp eq i64 %1222, 0
  br i1 %1223, label %1353, label %1224

1224:                                             ; preds = %1157
  %1225 = fcmp ogt <8 x double> %1219, %1214
  %1226 = getelementptr inbounds nuw i8, ptr %1038, i64 8576
  %1227 = load <8 x double>, ptr %1226, align 64, !tbaa !26, !noalias !73
  %1228 = fcmp oeq <8 x double> %1227, zeroinitializer
  %1229 = select <8 x i1> %1228, <8 x i1> %1225, <8 x i1> zeroinitializer
  %1230 = select <8 x i1> %1229, <8 x i64> %1072, <8 x i64> zeroinitializer
  %1231 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1230)
  %1232 = icmp eq i64 %1231, 0
  br i1 %1232, label %1303, label %1233

1233:                                             ; preds = %1224
  %1234 = fsub <8 x double> %1219, %1214
  %1235 = fmul <8 x double> %1107, %1234
  %1236 = getelementptr inbounds nuw i8, ptr %1038, i64 9568
  %1237 = load ptr, ptr %1236, align 32, !tbaa !66, !noalias !73
  %1238 = load i64, ptr %115, align 16, !tbaa !21, !noalias !73
  %1239 = add nsw i64 %1238, -1
  %1240 = getelementptr inbounds <8 x double>, ptr %1237, i64 %1239
  %1241 = load <8 x double>, ptr %1240, align 64, !tbaa !26, !noalias !73
  %1242 = icmp sgt i64 %1238, 1
  br i1 %1242, label %1243, label %1295

1243:                                             ; preds = %1233
  %1244 = getelementptr inbounds nuw i8, ptr %1038, i64 9472
  %1245 = load i64, ptr %1244, align 64, !tbaa !31, !noalias !73
  %1246 = getelementptr inbounds nuw i8, ptr %1038, i64 5056
  %1247 = getelementptr inbounds nuw i8, ptr %1038, i64 1920
  %1248 = getelementptr inbounds nuw i8, ptr %1038, i64 9608
  br label %1249

1249:                                             ; preds = %1243, %1292
  %1250 = phi <8 x double> [ %1221, %1243 ], [ %1287, %1292 ]
  %1251 = phi i64 [ %1239, %1243 ], [ %1293, %1292 ]
  %1252 = phi <8 x double> [ %1241, %1243 ], [ %1275, %1292 ]
  %1253 = phi <8 x i64> [ %1230, %1243 ], [ %1279, %1292 ]
  %1254 = phi <8 x double> [ %1235, %1243 ], [ %1286, %1292 ]
  %1255 = icmp slt i64 %1251, %1245
  br i1 %1255, label %1256, label %1262

1256:                                             ; preds = %1249
  %1257 = load ptr, ptr %1248, align 8, !tbaa !76, !noalias !73
  %1258 = getelementptr inbounds nuw <8 x double>, ptr %1257, i64 %1251
  %1259 = load <8 x double>, ptr %1258, align 64, !tbaa !26, !noalias !73
  %1260 = load <8 x double>, ptr %1247, align 64, !tbaa !26, !noalias !73
  %1261 = fmul <8 x double> %1259, %1260
  br label %1270

1262:                                             ; preds = %1249
  %1263 = load <8 x double>, ptr %1246, align 64, !tbaa !26, !noalias !73
  %1264 = load <8 x double>, ptr %1247, align 64, !tbaa !26, !noalias !73
  %1265 = load ptr, ptr %1248, align 8, !tbaa !76, !noalias !73
  %1266 = getelementptr inbounds nuw <8 x double>, ptr %1265, i64 %1251
  %1267 = load <8 x double>, ptr %1266, align 64, !tbaa !26, !noalias !73
  %1268 = fsub <8 x double> %1263, %1264
  %1269 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1267, <8 x double> %1268, <8 x double> %1264)
  br label %1270

1270:                                             ; preds = %1256, %1262
  %1271 = phi <8 x double> [ %1261, %1256 ], [ %1269, %1262 ]
  %1272 = getelementptr inbounds nuw <8 x double>, ptr %1237, i64 %1251
  %1273 = load <8 x double>, ptr %1272, align 64, !tbaa !26, !noalias !73
  %1274 = icmp eq <8 x i64> %1253, zeroinitializer
  %1275 = select <8 x i1> %1274, <8 x double> %1252, <8 x double> %1273
  %1276 = fsub <8 x double> %1250, %1271
  %1277 = fmul <8 x double> %1276, %1275
  %1278 = fcmp olt <8 x double> %1277, %1254
  %1279 = select <8 x i1> %1278, <8 x i64> %1253, <8 x i64> zeroinitializer
  %1280 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1279)
  %1281 = icmp eq i64 %1280, 0
  br i1 %1281, label %1295, label %1282

1282:                                             ; preds = %1270
  %1283 = fneg <8 x double> %1275
  %1284 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1283, <8 x double> %1276, <8 x double> %1254)
  %1285 = icmp eq <8 x i64> %1279, zeroinitializer
  %1286 = select <8 x i1> %1285, <8 x double> %1254, <8 x double> %1284
  %1287 = select <8 x i1> %1285, <8 x double> %1250, <8 x double> %1271
  %1288 = icmp eq i64 %1251, 1
  br i1 %1288, label %1289, label %1292

1289:                                             ; preds = %1282
  %1290 = load <8 x double>, ptr %1237, align 64, !tbaa !26, !noalias !73
  %1291 = select <8 x i1> %1285, <8 x double> %1275, <8 x double> %1290
  br label %1295

1292:                                             ; preds = %1282
  %1293 = add nsw i64 %1251, -1
  %1294 = icmp sgt i64 %1251, 1
  br i1 %1294, label %1249, label %1295, !llvm.loop !77

1295:                                             ; preds = %1292, %1270, %1289, %1233
  %1296 = phi <8 x double> [ %1235, %1233 ], [ %1286, %1289 ], [ %1254, %1270 ], [ %1286, %1292 ]
  %1297 = phi <8 x double> [ %1221, %1233 ], [ %1287, %1289 ], [ %1250, %1270 ], [ %1287, %1292 ]
  %1298 = phi <8 x double> [ %1241, %1233 ], [ %1291, %1289 ], [ %1275, %1270 ], [ %1275, %1292 ]
  %1299 = fdiv <8 x double> %1296, %1298
  %1300 = fsub <8 x double> %1297, %1299
  %1301 = icmp eq <8 x i64> %1230, zeroinitializer
  %1302 = select <8 x i1> %1301, <8 x double> %1221, <8 x double> %1300
  br label %1303

1303:                                             ; preds = %1295, %1224
  %1304 = phi <8 x double> [ %1302, %1295 ], [ %1221, %1224 ]
  %1305 = getelementptr inbounds nuw i8, ptr %1038, i64 3008
  %1306 = load <8 x double>, ptr %1305, align 64, !tbaa !26, !noalias !73
  %1307 = getelementptr inbounds nuw i8, ptr %1038, i64 3072
  %1308 = load <8 x double>, ptr %1307, align 64, !tbaa !26, !noalias !73
  %1309 = getelementptr inbounds nuw i8, ptr %1038, i64 3136
  %1310 = load <8 x double>, ptr %1309, align 64, !tbaa !26, !noalias !73
  %1311 = getelementptr inbounds nuw i8, ptr %1038, i64 2944
  %1312 = load <8 x double>, ptr %1311, align 64, !tbaa !26, !noalias !73
  %1313 = fmul <8 x double> %1045, splat (double 5.000000e-04)
  br label %1314

1314:                                             ; preds = %1303, %1314
  %1315 = phi <8 x i64> [ splat (i64 -1), %1303 ], [ %1337, %1314 ]
  %1316 = phi i32 [ 0, %1303 ], [ %1338, %1314 ]
  %1317 = phi <8 x double> [ %1049, %1303 ], [ %1334, %1314 ]
  %1318 = fmul <8 x double> %1317, splat (double 3.000000e+00)
  %1319 = fmul <8 x double> %1318, %1310
  %1320 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1308, <8 x double> splat (double 2.000000e+00), <8 x double> %1319)
  %1321 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1317, <8 x double> %1320, <8 x double> %1306)
  %1322 = fdiv <8 x double> splat (double 1.000000e+00), %1321
  %1323 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1317, <8 x double> %1310, <8 x double> %1308)
  %1324 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1317, <8 x double> %1323, <8 x double> %1306)
  %1325 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1317, <8 x double> %1324, <8 x double> %1312)
  %1326 = fsub <8 x double> %1325, %1304
  %1327 = fmul <8 x double> %1326, %1322
  %1328 = fmul <8 x double> %1327, %1327
  %1329 = fmul <8 x double> %1322, %1328
  %1330 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1318, <8 x double> %1310, <8 x double> %1308)
  %1331 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1329, <8 x double> %1330, <8 x double> %1327)
  %1332 = fsub <8 x double> %1317, %1331
  %1333 = icmp eq <8 x i64> %1315, zeroinitializer
  %1334 = select <8 x i1> %1333, <8 x double> %1317, <8 x double> %1332
  %1335 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1331)
  %1336 = fcmp oge <8 x double> %1335, %1313
  %1337 = select <8 x i1> %1336, <8 x i64> %1315, <8 x i64> zeroinitializer
  %1338 = add nuw nsw i32 %1316, 1
  %1339 = icmp samesign ult i32 %1316, 3
  %1340 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1337)
  %1341 = icmp ne i64 %1340, 0
  %1342 = select i1 %1339, i1 %1341, i1 false
  br i1 %1342, label %1314, label %1343, !llvm.loop !78

1343:                                             ; preds = %1314
  %1344 = fmul <8 x double> %1045, splat (double 2.800000e-01)
  %1345 = fcmp ogt <8 x double> %1334, %1344
  %1346 = select <8 x i1> %1345, <8 x double> %1334, <8 x double> %1344
  %1347 = fcmp olt <8 x double> %1346, %1045
  %1348 = select <8 x i1> %1347, <8 x double> %1346, <8 x double> %1045
  %1349 = select <8 x i1> %1077, <8 x double> %1049, <8 x double> %1348
  %1350 = fcmp olt <8 x double> %1219, %1214
  %1351 = select <8 x i1> %1077, <8 x i1> splat (i1 true), <8 x i1> %1350
  %1352 = select <8 x i1> %1351, <8 x double> %1219, <8 x double> %1214
  br label %1353

1353:                                             ; preds = %1157, %1343
  %1354 = phi <8 x double> [ %1352, %1343 ], [ %1219, %1157 ]
  %1355 = phi <8 x double> [ %1349, %1343 ], [ %1049, %1157 ]
  %1356 = phi <8 x double> [ %1304, %1343 ], [ %1221, %1157 ]
  %1357 = fsub <8 x double> %1214, %1354
  %1358 = select <8 x i1> %709, <8 x double> %1094, <8 x double> %1211
  store <8 x double> %1358, ptr %1093, align 64, !tbaa !26
  %1359 = select <8 x i1> %709, <8 x double> %1051, <8 x double> %1357
  store <8 x double> %1359, ptr %1050, align 64, !tbaa !26
  %1360 = getelementptr inbounds nuw i8, ptr %1038, i64 3520
  %1361 = load <8 x double>, ptr %1360, align 64, !tbaa !26
  %1362 = select <8 x i1> %709, <8 x double> %1361, <8 x double> %1354
  store <8 x double> %1362, ptr %1360, align 64, !tbaa !26
  %1363 = getelementptr inbounds nuw i8, ptr %1038, i64 3392
  %1364 = and <8 x i64> %1072, %543
  %1365 = load <8 x double>, ptr %1363, align 64, !tbaa !26
  %1366 = icmp eq <8 x i64> %1364, zeroinitializer
  %1367 = select <8 x i1> %1366, <8 x double> %1365, <8 x double> %1356
  store <8 x double> %1367, ptr %1363, align 64, !tbaa !26
  %1368 = select <8 x i1> %1366, <8 x double> %1049, <8 x double> %1355
  store <8 x double> %1368, ptr %1039, align 64, !tbaa !26
  %1369 = add nuw nsw i64 %1036, 1
  %1370 = load i64, ptr %153, align 8, !tbaa !20
  %1371 = icmp slt i64 %1369, %1370
  br i1 %1371, label %1035, label %1372, !llvm.loop !79

1372:                                             ; preds = %1353, %680, %793
  %1373 = phi i64 [ %1020, %793 ], [ %791, %680 ], [ %1370, %1353 ]
  %1374 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %1375 = fcmp ogt <8 x double> %1374, zeroinitializer
  %1376 = select <8 x i1> %1375, <8 x i64> %543, <8 x i64> zeroinitializer
  %1377 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1376)
  %1378 = icmp eq i64 %1377, 0
  br i1 %1378, label %1462, label %1379

1379:                                             ; preds = %1372
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1376, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #6
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #6
  %1380 = load <8 x double>, ptr %133, align 64, !tbaa !26
  %1381 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %1382 = fadd <8 x double> %1380, %1381
  store <8 x double> %1382, ptr %9, align 64, !tbaa !26
  %1383 = load ptr, ptr %166, align 8
  %1384 = load ptr, ptr %168, align 8
  %1385 = load ptr, ptr %169, align 8
  br label %1386

1386:                                             ; preds = %1454, %1379
  %1387 = phi i64 [ 0, %1379 ], [ %1455, %1454 ]
  %1388 = getelementptr inbounds nuw i64, ptr %7, i64 %1387
  %1389 = load i64, ptr %1388, align 8, !tbaa !30
  %1390 = icmp eq i64 %1389, 0
  br i1 %1390, label %1454, label %1391

1391:                                             ; preds = %1386
  %1392 = getelementptr inbounds nuw [8 x i64], ptr %117, i64 0, i64 %1387
  %1393 = load i64, ptr %1392, align 8, !tbaa !30
  %1394 = shl nsw i64 %1393, 1
  %1395 = getelementptr inbounds i64, ptr %1383, i64 %1394
  %1396 = load i64, ptr %1395, align 8, !tbaa !30
  %1397 = shl nuw nsw i64 %1387, 1
  %1398 = getelementptr inbounds nuw [16 x i64], ptr %167, i64 0, i64 %1397
  %1399 = getelementptr inbounds i64, ptr %1385, i64 %1394
  %1400 = load i64, ptr %1399, align 8, !tbaa !30
  %1401 = shl nsw i64 %1400, 4
  %1402 = getelementptr inbounds i8, ptr %1384, i64 %1401
  %1403 = getelementptr inbounds nuw double, ptr %9, i64 %1387
  %1404 = load double, ptr %1403, align 8, !tbaa !42
  %1405 = load i64, ptr %1398, align 8, !tbaa !30
  %1406 = getelementptr i8, ptr %1402, i64 -16
  %1407 = icmp sgt i64 %1405, 0
  br i1 %1407, label %1408, label %1417

1408:                                             ; preds = %1391, %1414
  %1409 = phi i64 [ %1415, %1414 ], [ %1405, %1391 ]
  %1410 = shl i64 %1409, 4
  %1411 = getelementptr i8, ptr %1406, i64 %1410
  %1412 = load double, ptr %1411, align 8, !tbaa !42
  %1413 = fcmp ugt double %1404, %1412
  br i1 %1413, label %1417, label %1414

1414:                                             ; preds = %1408
  %1415 = add nsw i64 %1409, -1
  store i64 %1415, ptr %1398, align 8, !tbaa !30
  %1416 = icmp sgt i64 %1409, 1
  br i1 %1416, label %1408, label %1417, !llvm.loop !80

1417:                                             ; preds = %1414, %1408, %1391
  %1418 = phi i64 [ %1405, %1391 ], [ 0, %1414 ], [ %1409, %1408 ]
  %1419 = icmp slt i64 %1418, %1396
  br i1 %1419, label %1420, label %1429

1420:                                             ; preds = %1417, %1426
  %1421 = phi i64 [ %1427, %1426 ], [ %1418, %1417 ]
  %1422 = shl nsw i64 %1421, 4
  %1423 = getelementptr inbounds i8, ptr %1402, i64 %1422
  %1424 = load double, ptr %1423, align 8, !tbaa !42
  %1425 = fcmp ule double %1404, %1424
  br i1 %1425, label %1434, label %1426

1426:                                             ; preds = %1420
  %1427 = add i64 %1421, 1
  store i64 %1427, ptr %1398, align 8, !tbaa !30
  %1428 = icmp eq i64 %1427, %1396
  br i1 %1428, label %1429, label %1420, !llvm.loop !81

1429:                                             ; preds = %1426, %1417
  %1430 = shl i64 %1396, 4
  %1431 = getelementptr i8, ptr %1402, i64 %1430
  %1432 = getelementptr i8, ptr %1431, i64 -8
  %1433 = load double, ptr %1432, align 8, !tbaa !42
  br label %1451

1434:                                             ; preds = %1420
  %1435 = shl nsw i64 %1421, 1
  %1436 = or disjoint i64 %1435, 1
  %1437 = getelementptr inbounds double, ptr %1402, i64 %1436
  %1438 = load double, ptr %1437, align 8, !tbaa !42
  %1439 = icmp sgt i64 %1421, 0
  br i1 %1439, label %1440, label %1451

1440:                                             ; preds = %1434
  %1441 = getelementptr inbounds nuw i8, ptr %1402, i64 %1422
  %1442 = getelementptr i8, ptr %1441, i64 -8
  %1443 = load double, ptr %1442, align 8, !tbaa !42
  %1444 = getelementptr i8, ptr %1441, i64 -16
  %1445 = load double, ptr %1444, align 8, !tbaa !42
  %1446 = fsub double %1404, %1445
  %1447 = fsub double %1424, %1445
  %1448 = fdiv double %1446, %1447
  %1449 = fsub double %1438, %1443
  %1450 = tail call double @llvm.fmuladd.f64(double %1448, double %1449, double %1443)
  br label %1451

1451:                                             ; preds = %1440, %1434, %1429
  %1452 = phi double [ %1450, %1440 ], [ %1438, %1434 ], [ %1433, %1429 ]
  %1453 = getelementptr inbounds nuw double, ptr %8, i64 %1387
  store double %1452, ptr %1453, align 8, !tbaa !42
  br label %1454

1454:                                             ; preds = %1451, %1386
  %1455 = add nuw nsw i64 %1387, 1
  %1456 = icmp eq i64 %1455, 8
  br i1 %1456, label %1457, label %1386, !llvm.loop !82

1457:                                             ; preds = %1454
  %1458 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1459 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %1460 = icmp eq <8 x i64> %1376, zeroinitializer
  %1461 = select <8 x i1> %1460, <8 x double> %1459, <8 x double> %1458
  store <8 x double> %1461, ptr %162, align 64, !tbaa !26
  br label %1462

1462:                                             ; preds = %1372, %1457, %541
  %1463 = phi i64 [ %1373, %1372 ], [ %1373, %1457 ], [ %546, %541 ]
  %1464 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %1465 = icmp eq <8 x i64> %543, zeroinitializer
  %1466 = select <8 x i1> %1465, <8 x double> %1464, <8 x double> zeroinitializer
  store <8 x double> %1466, ptr %170, align 64, !tbaa !26
  %1467 = load <8 x i64>, ptr %106, align 64, !tbaa !26
  %1468 = xor <8 x i64> %543, splat (i64 -1)
  %1469 = and <8 x i64> %1467, %1468
  store <8 x i64> %1469, ptr %171, align 64, !tbaa !26
  %1470 = icmp sgt i64 %1463, 0
  br i1 %1470, label %2201, label %2648

1471:                                             ; preds = %2509
  %1472 = load i64, ptr %115, align 16, !tbaa !21
  %1473 = icmp sgt i64 %2646, 0
  br i1 %1473, label %1474, label %2648

1474:                                             ; preds = %1471
  %1475 = icmp sgt i64 %1472, 0
  br label %1478

1476:                                             ; preds = %2196
  %1477 = icmp sgt i64 %2199, 0
  br i1 %1477, label %2654, label %2648

1478:                                             ; preds = %1474, %2196
  %1479 = phi i64 [ %2646, %1474 ], [ %2199, %2196 ]
  %1480 = phi i64 [ 0, %1474 ], [ %2198, %2196 ]
  %1481 = load ptr, ptr %126, align 8, !tbaa !28
  %1482 = getelementptr inbounds %struct.Piece, ptr %1481, i64 %1480
  %1483 = getelementptr inbounds nuw i8, ptr %1482, i64 9472
  %1484 = load i64, ptr %1483, align 64, !tbaa !31
  %1485 = icmp eq i64 %1484, 0
  br i1 %1485, label %1752, label %1486

1486:                                             ; preds = %1478
  %1487 = getelementptr inbounds nuw i8, ptr %1482, i64 384
  %1488 = load <8 x double>, ptr %1487, align 64, !tbaa !26
  %1489 = getelementptr inbounds nuw i8, ptr %1482, i64 448
  %1490 = load <8 x double>, ptr %1489, align 64, !tbaa !26
  %1491 = getelementptr inbounds nuw i8, ptr %1482, i64 512
  %1492 = load <8 x double>, ptr %1491, align 64, !tbaa !26
  %1493 = getelementptr inbounds nuw i8, ptr %1482, i64 576
  %1494 = load <8 x double>, ptr %1493, align 64, !tbaa !26
  %1495 = getelementptr inbounds nuw i8, ptr %1482, i64 640
  %1496 = load <8 x double>, ptr %1495, align 64, !tbaa !26
  %1497 = getelementptr inbounds nuw i8, ptr %1482, i64 704
  %1498 = getelementptr inbounds nuw i8, ptr %1482, i64 960
  %1499 = load <8 x double>, ptr %1498, align 64, !tbaa !26
  %1500 = getelementptr inbounds nuw i8, ptr %1482, i64 1024
  %1501 = load <8 x double>, ptr %1500, align 64, !tbaa !26
  %1502 = getelementptr inbounds nuw i8, ptr %1482, i64 1920
  %1503 = load <8 x double>, ptr %1502, align 64, !tbaa !26
  %1504 = load i64, ptr %115, align 16, !tbaa !21
  %1505 = add nsw i64 %1504, -1
  %1506 = getelementptr inbounds nuw i8, ptr %1482, i64 3328
  %1507 = load <8 x double>, ptr %1506, align 64, !tbaa !26
  %1508 = getelementptr inbounds nuw i8, ptr %1482, i64 8064
  %1509 = load <8 x double>, ptr %1508, align 64, !tbaa !26
  %1510 = getelementptr inbounds nuw i8, ptr %1482, i64 7872
  %1511 = load <8 x double>, ptr %1510, align 64, !tbaa !26
  %1512 = getelementptr inbounds nuw i8, ptr %1482, i64 6016
  %1513 = load <8 x double>, ptr %1512, align 64, !tbaa !26
  %1514 = getelementptr inbounds nuw i8, ptr %1482, i64 4160
  %1515 = load <8 x double>, ptr %1514, align 64, !tbaa !26
  %1516 = fsub <8 x double> %1515, %1503
  %1517 = getelementptr inbounds nuw i8, ptr %1482, i64 6080
  %1518 = load <8 x double>, ptr %1517, align 64, !tbaa !26, !noalias !83
  %1519 = getelementptr inbounds nuw i8, ptr %1482, i64 5056
  %1520 = load <8 x double>, ptr %1519, align 64, !tbaa !26, !noalias !83
  %1521 = fsub <8 x double> %1520, %1503
  %1522 = getelementptr inbounds nuw i8, ptr %1482, i64 6144
  %1523 = load <8 x double>, ptr %1522, align 64, !tbaa !26, !noalias !83
  %1524 = getelementptr inbounds nuw i8, ptr %1482, i64 5952
  %1525 = load <8 x double>, ptr %1524, align 64, !tbaa !26, !noalias !83
  %1526 = fsub <8 x double> %1525, %1503
  %1527 = getelementptr inbounds nuw i8, ptr %1482, i64 9544
  %1528 = load ptr, ptr %1527, align 8, !tbaa !86
  %1529 = getelementptr inbounds nuw i8, ptr %1482, i64 9552
  %1530 = load ptr, ptr %1529, align 16, !tbaa !47
  %1531 = getelementptr inbounds nuw i8, ptr %1482, i64 9560
  %1532 = load ptr, ptr %1531, align 8, !tbaa !65
  %1533 = getelementptr inbounds nuw i8, ptr %1482, i64 9608
  %1534 = load ptr, ptr %1533, align 8, !tbaa !76
  %1535 = getelementptr inbounds nuw i8, ptr %1482, i64 9616
  %1536 = load ptr, ptr %1535, align 16, !tbaa !48
  %1537 = getelementptr inbounds nuw i8, ptr %1482, i64 9632
  %1538 = getelementptr inbounds nuw i8, ptr %1482, i64 6272
  %1539 = load <8 x double>, ptr %1538, align 64, !tbaa !26
  %1540 = load <8 x i64>, ptr %171, align 64, !tbaa !26
  %1541 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1540)
  %1542 = icmp eq i64 %1541, 0
  %1543 = getelementptr inbounds nuw i8, ptr %1482, i64 9600
  %1544 = load ptr, ptr %1543, align 64, !tbaa !87
  %1545 = getelementptr inbounds nuw i8, ptr %1482, i64 9584
  %1546 = load ptr, ptr %1545, align 16, !tbaa !88
  %1547 = getelementptr inbounds nuw i8, ptr %1482, i64 9592
  %1548 = load ptr, ptr %1547, align 8, !tbaa !89
  %1549 = load <8 x double>, ptr %1530, align 64, !tbaa !26
  %1550 = load <8 x double>, ptr %1532, align 64, !tbaa !26
  %1551 = fsub <8 x double> %1549, %1550
  %1552 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1539, <8 x double> %1551, <8 x double> %1549)
  br i1 %1542, label %1557, label %1553

1553:                                             ; preds = %1486
  %1554 = load <8 x double>, ptr %1528, align 64, !tbaa !26
  %1555 = icmp eq <8 x i64> %1540, zeroinitializer
  %1556 = select <8 x i1> %1555, <8 x double> %1552, <8 x double> %1554
  br label %1557

1557:                                             ; preds = %1486, %1553
  %1558 = phi <8 x double> [ %1556, %1553 ], [ %1552, %1486 ]
  br i1 %1475, label %1559, label %2196

1559:                                             ; preds = %1557
  %1560 = getelementptr inbounds nuw i8, ptr %1482, i64 7168
  %1561 = getelementptr inbounds nuw i8, ptr %1482, i64 7232
  %1562 = getelementptr inbounds nuw i8, ptr %1482, i64 7296
  %1563 = icmp eq <8 x i64> %1540, zeroinitializer
  %1564 = fdiv <8 x double> %1499, %1501
  %1565 = getelementptr inbounds nuw i8, ptr %1482, i64 768
  %1566 = getelementptr inbounds nuw i8, ptr %1482, i64 832
  %1567 = getelementptr inbounds nuw i8, ptr %1482, i64 896
  %1568 = getelementptr inbounds nuw i8, ptr %1482, i64 192
  %1569 = getelementptr inbounds nuw i8, ptr %1482, i64 256
  %1570 = getelementptr inbounds nuw i8, ptr %1482, i64 320
  %1571 = getelementptr inbounds nuw i8, ptr %1482, i64 3200
  %1572 = getelementptr inbounds nuw i8, ptr %1482, i64 3264
  %1573 = getelementptr inbounds nuw i8, ptr %1482, i64 64
  %1574 = getelementptr inbounds nuw i8, ptr %1482, i64 7040
  %1575 = getelementptr inbounds nuw i8, ptr %1482, i64 7104
  br label %1576

1576:                                             ; preds = %1559, %1717
  %1577 = phi i64 [ 0, %1559 ], [ %1750, %1717 ]
  %1578 = phi <8 x double> [ zeroinitializer, %1559 ], [ %1748, %1717 ]
  %1579 = phi <8 x double> [ zeroinitializer, %1559 ], [ %1746, %1717 ]
  %1580 = phi <8 x double> [ zeroinitializer, %1559 ], [ %1723, %1717 ]
  %1581 = phi <8 x double> [ zeroinitializer, %1559 ], [ %1722, %1717 ]
  %1582 = phi <8 x double> [ zeroinitializer, %1559 ], [ %1721, %1717 ]
  %1583 = phi <8 x double> [ %1550, %1559 ], [ %1720, %1717 ]
  %1584 = phi <8 x double> [ %1549, %1559 ], [ %1719, %1717 ]
  %1585 = phi <8 x double> [ %1558, %1559 ], [ %1718, %1717 ]
  %1586 = load <8 x double>, ptr %1560, align 64, !tbaa !26
  %1587 = load <8 x double>, ptr %1561, align 64, !tbaa !26
  %1588 = load <8 x double>, ptr %1562, align 64, !tbaa !26
  %1589 = icmp slt i64 %1577, %1505
  br i1 %1589, label %1590, label %1717

1590:                                             ; preds = %1576
  %1591 = add nuw nsw i64 %1577, 1
  %1592 = getelementptr inbounds nuw <8 x double>, ptr %1530, i64 %1591
  %1593 = load <8 x double>, ptr %1592, align 64, !tbaa !26
  %1594 = getelementptr inbounds nuw <8 x double>, ptr %1532, i64 %1591
  %1595 = load <8 x double>, ptr %1594, align 64, !tbaa !26
  %1596 = fsub <8 x double> %1593, %1595
  %1597 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1539, <8 x double> %1596, <8 x double> %1593)
  br i1 %1542, label %1602, label %1598

1598:                                             ; preds = %1590
  %1599 = getelementptr inbounds nuw <8 x double>, ptr %1528, i64 %1591
  %1600 = load <8 x double>, ptr %1599, align 64, !tbaa !26
  %1601 = select <8 x i1> %1563, <8 x double> %1597, <8 x double> %1600
  br label %1602

1602:                                             ; preds = %1590, %1598
  %1603 = phi <8 x double> [ %1601, %1598 ], [ %1597, %1590 ]
  %1604 = icmp eq i64 %1591, %1484
  br i1 %1604, label %1605, label %1676

1605:                                             ; preds = %1602
  %1606 = load <8 x double>, ptr %1497, align 64, !tbaa !26, !noalias !90
  %1607 = load <8 x double>, ptr %1565, align 64, !tbaa !26, !noalias !90
  %1608 = load <8 x double>, ptr %1566, align 64, !tbaa !26, !noalias !90
  %1609 = load <8 x double>, ptr %1567, align 64, !tbaa !26, !noalias !90
  %1610 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1603, <8 x double> %1609, <8 x double> %1608)
  %1611 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1603, <8 x double> %1610, <8 x double> %1607)
  %1612 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1603, <8 x double> %1611, <8 x double> %1606)
  %1613 = fmul <8 x double> %1603, %1612
  %1614 = load <8 x double>, ptr %1568, align 64, !tbaa !26, !noalias !90
  %1615 = load <8 x double>, ptr %1569, align 64, !tbaa !26, !noalias !90
  %1616 = load <8 x double>, ptr %1570, align 64, !tbaa !26, !noalias !90
  %1617 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1613, <8 x double> %1616, <8 x double> %1615)
  %1618 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1613, <8 x double> %1617, <8 x double> %1614)
  %1619 = fdiv <8 x double> splat (double 1.000000e+00), %1618
  %1620 = fmul <8 x double> %1616, %1613
  %1621 = fmul <8 x double> %1620, splat (double 0x3FD5555555555555)
  %1622 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1615, <8 x double> splat (double 5.000000e-01), <8 x double> %1621)
  %1623 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1613, <8 x double> %1622, <8 x double> %1614)
  %1624 = fmul <8 x double> %1613, %1623
  %1625 = fsub <8 x double> %1603, %1624
  %1626 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1625, <8 x double> %1619, <8 x double> %1613)
  %1627 = load <8 x double>, ptr %1571, align 64, !tbaa !26, !noalias !95
  %1628 = load <8 x double>, ptr %1498, align 64, !tbaa !26, !noalias !95
  %1629 = fdiv <8 x double> %1627, %1628
  %1630 = load <8 x double>, ptr %1572, align 64, !tbaa !26, !noalias !95
  %1631 = load <8 x double>, ptr %1573, align 64, !tbaa !26, !noalias !95
  %1632 = fsub <8 x double> %1507, %1631
  %1633 = fmul <8 x double> %1630, %1632
  %1634 = fmul <8 x double> %1603, splat (double 2.000000e+00)
  %1635 = load <8 x double>, ptr %1487, align 64, !tbaa !26, !noalias !95
  %1636 = load <8 x double>, ptr %1489, align 64, !tbaa !26, !noalias !95
  %1637 = load <8 x double>, ptr %1491, align 64, !tbaa !26, !noalias !95
  %1638 = load <8 x double>, ptr %1493, align 64, !tbaa !26, !noalias !95
  %1639 = load <8 x double>, ptr %1495, align 64, !tbaa !26, !noalias !95
  %1640 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1639, <8 x double> %1638)
  %1641 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1640, <8 x double> %1637)
  %1642 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1641, <8 x double> %1636)
  %1643 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1642, <8 x double> %1635)
  %1644 = fmul <8 x double> %1618, %1643
  %1645 = fdiv <8 x double> %1633, %1644
  %1646 = fadd <8 x double> %1629, %1645
  %1647 = load i64, ptr %1483, align 64, !tbaa !31, !noalias !95
  %1648 = icmp eq i64 %1647, 0
  %1649 = load ptr, ptr %1537, align 32, !tbaa !37, !noalias !95
  br i1 %1648, label %1650, label %1653

1650:                                             ; preds = %1605
  %1651 = load <8 x double>, ptr %1649, align 64, !tbaa !26, !noalias !95
  %1652 = fmul <8 x double> %1511, %1651
  br label %1666

1653:                                             ; preds = %1605
  %1654 = shl nsw i64 %1647, 8
  %1655 = getelementptr inbounds i8, ptr %1649, i64 %1654
  %1656 = load <8 x double>, ptr %1655, align 64, !tbaa !26, !noalias !95
  %1657 = getelementptr inbounds nuw i8, ptr %1655, i64 64
  %1658 = load <8 x double>, ptr %1657, align 64, !tbaa !26, !noalias !95
  %1659 = getelementptr inbounds nuw i8, ptr %1655, i64 128
  %1660 = load <8 x double>, ptr %1659, align 64, !tbaa !26, !noalias !95
  %1661 = getelementptr inbounds nuw i8, ptr %1655, i64 192
  %1662 = load <8 x double>, ptr %1661, align 64, !tbaa !26, !noalias !95
  %1663 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1507, <8 x double> %1662, <8 x double> %1660)
  %1664 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1507, <8 x double> %1663, <8 x double> %1658)
  %1665 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1507, <8 x double> %1664, <8 x double> %1656)
  br label %1666

1666:                                             ; preds = %1650, %1653
  %1667 = phi <8 x double> [ %1652, %1650 ], [ %1665, %1653 ]
  %1668 = fdiv <8 x double> %1667, %1646
  %1669 = fmul <8 x double> %1619, %1668
  %1670 = load <8 x double>, ptr %1500, align 64, !tbaa !26, !noalias !95
  %1671 = fdiv <8 x double> %1668, %1670
  %1672 = fneg <8 x double> %1603
  %1673 = fmul <8 x double> %1669, %1672
  %1674 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1668, <8 x double> %1626, <8 x double> %1673)
  %1675 = fsub <8 x double> %1671, %1669
  store <8 x double> %1675, ptr %1574, align 64, !tbaa !26
  store <8 x double> %1674, ptr %1575, align 64, !tbaa !26
  br label %1717

1676:                                             ; preds = %1602
  %1677 = load i64, ptr %1483, align 64, !tbaa !31, !noalias !96
  %1678 = icmp eq i64 %1677, 0
  %1679 = load ptr, ptr %1537, align 32, !tbaa !37, !noalias !96
  br i1 %1678, label %1680, label %1684

1680:                                             ; preds = %1676
  %1681 = getelementptr inbounds nuw <8 x double>, ptr %1679, i64 %1591
  %1682 = load <8 x double>, ptr %1681, align 64, !tbaa !26, !noalias !96
  %1683 = fmul <8 x double> %1511, %1682
  br label %1700

1684:                                             ; preds = %1676
  %1685 = shl nsw i64 %1591, 8
  %1686 = getelementptr inbounds nuw i8, ptr %1679, i64 %1685
  %1687 = load <8 x double>, ptr %1686, align 64, !tbaa !26, !noalias !96
  %1688 = getelementptr inbounds nuw i8, ptr %1686, i64 64
  %1689 = load <8 x double>, ptr %1688, align 64, !tbaa !26, !noalias !96
  %1690 = getelementptr inbounds nuw i8, ptr %1686, i64 128
  %1691 = load <8 x double>, ptr %1690, align 64, !tbaa !26, !noalias !96
  %1692 = getelementptr inbounds nuw i8, ptr %1686, i64 192
  %1693 = load <8 x double>, ptr %1692, align 64, !tbaa !26, !noalias !96
  %1694 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1507, <8 x double> %1693, <8 x double> %1691)
  %1695 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1507, <8 x double> %1694, <8 x double> %1689)
  %1696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1507, <8 x double> %1695, <8 x double> %1687)
  %1697 = icmp slt i64 %1577, %1677
  %1698 = fmul <8 x double> %1511, %1696
  %1699 = select i1 %1697, <8 x double> %1696, <8 x double> %1698
  br label %1700

1700:                                             ; preds = %1684, %1680
  %1701 = phi <8 x double> [ %1683, %1680 ], [ %1699, %1684 ]
  %1702 = icmp slt i64 %1591, %1484
  br i1 %1702, label %1703, label %1705

1703:                                             ; preds = %1700
  %1704 = fmul <8 x double> %1564, %1701
  br label %1717

1705:                                             ; preds = %1700
  %1706 = fadd <8 x double> %1585, %1603
  %1707 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1706, <8 x double> %1496, <8 x double> %1494)
  %1708 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1706, <8 x double> %1707, <8 x double> %1492)
  %1709 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1706, <8 x double> %1708, <8 x double> %1490)
  %1710 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1706, <8 x double> %1709, <8 x double> %1488)
  %1711 = fmul <8 x double> %1710, %1701
  %1712 = getelementptr inbounds nuw <8 x double>, ptr %1534, i64 %1591
  %1713 = load <8 x double>, ptr %1712, align 64, !tbaa !26, !noalias !96
  %1714 = fmul <8 x double> %1509, %1713
  %1715 = fsub <8 x double> %1711, %1714
  %1716 = fadd <8 x double> %1711, %1714
  br label %1717

1717:                                             ; preds = %1705, %1703, %1666, %1576
  %1718 = phi <8 x double> [ %1585, %1576 ], [ %1603, %1666 ], [ %1603, %1703 ], [ %1603, %1705 ]
  %1719 = phi <8 x double> [ %1584, %1576 ], [ %1593, %1666 ], [ %1593, %1703 ], [ %1593, %1705 ]
  %1720 = phi <8 x double> [ %1583, %1576 ], [ %1595, %1666 ], [ %1595, %1703 ], [ %1595, %1705 ]
  %1721 = phi <8 x double> [ %1586, %1576 ], [ %1671, %1666 ], [ %1704, %1703 ], [ %1715, %1705 ]
  %1722 = phi <8 x double> [ %1587, %1576 ], [ %1669, %1666 ], [ %1704, %1703 ], [ %1716, %1705 ]
  %1723 = phi <8 x double> [ %1588, %1576 ], [ %1674, %1666 ], [ zeroinitializer, %1703 ], [ zeroinitializer, %1705 ]
  %1724 = getelementptr inbounds nuw <8 x double>, ptr %1536, i64 %1577
  %1725 = load <8 x double>, ptr %1724, align 64, !tbaa !26
  %1726 = icmp slt i64 %1577, %1484
  %1727 = select i1 %1726, <8 x double> %1503, <8 x double> %1516
  %1728 = fmul <8 x double> %1513, %1727
  %1729 = select i1 %1726, <8 x double> %1503, <8 x double> %1526
  %1730 = fmul <8 x double> %1729, %1523
  %1731 = select i1 %1726, <8 x double> %1503, <8 x double> %1521
  %1732 = fmul <8 x double> %1731, %1518
  %1733 = fmul <8 x double> %1730, %1583
  %1734 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1732, <8 x double> %1584, <8 x double> %1733)
  %1735 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1725, <8 x double> %1728, <8 x double> %1721)
  %1736 = fadd <8 x double> %1581, %1735
  %1737 = fmul <8 x double> %1725, %1734
  %1738 = fsub <8 x double> %1580, %1723
  %1739 = fadd <8 x double> %1738, %1737
  %1740 = fneg <8 x double> %1582
  %1741 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1740, <8 x double> %1578, <8 x double> %1736)
  %1742 = fdiv <8 x double> splat (double 1.000000e+00), %1741
  %1743 = getelementptr inbounds nuw <8 x double>, ptr %1544, i64 %1577
  store <8 x double> %1582, ptr %1743, align 64, !tbaa !26
  %1744 = fneg <8 x double> %1739
  %1745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1582, <8 x double> %1579, <8 x double> %1744)
  %1746 = fmul <8 x double> %1742, %1745
  %1747 = getelementptr inbounds nuw <8 x double>, ptr %1546, i64 %1577
  store <8 x double> %1746, ptr %1747, align 64, !tbaa !26
  %1748 = fmul <8 x double> %1722, %1742
  %1749 = getelementptr inbounds nuw <8 x double>, ptr %1548, i64 %1577
  store <8 x double> %1748, ptr %1749, align 64, !tbaa !26
  %1750 = add nuw nsw i64 %1577, 1
  %1751 = icmp eq i64 %1750, %1472
  br i1 %1751, label %2196, label %1576, !llvm.loop !99

1752:                                             ; preds = %1478
  %1753 = add nsw i64 %1480, 1
  %1754 = icmp slt i64 %1753, %1479
  br i1 %1754, label %1758, label %1755

1755:                                             ; preds = %1752
  %1756 = load i64, ptr %115, align 16, !tbaa !21
  %1757 = load <8 x i64>, ptr %171, align 64, !tbaa !26
  br label %2047

1758:                                             ; preds = %1752
  %1759 = getelementptr inbounds %struct.Piece, ptr %1481, i64 %1753, i32 51
  %1760 = load i64, ptr %1759, align 64, !tbaa !31
  %1761 = icmp eq i64 %1760, 0
  %1762 = load i64, ptr %115, align 16, !tbaa !21
  %1763 = load <8 x i64>, ptr %171, align 64, !tbaa !26
  br i1 %1761, label %1764, label %2047

1764:                                             ; preds = %1758
  %1765 = getelementptr inbounds nuw i8, ptr %1482, i64 384
  %1766 = load <8 x double>, ptr %1765, align 64, !tbaa !26
  %1767 = getelementptr inbounds nuw i8, ptr %1482, i64 448
  %1768 = load <8 x double>, ptr %1767, align 64, !tbaa !26
  %1769 = getelementptr inbounds nuw i8, ptr %1482, i64 512
  %1770 = load <8 x double>, ptr %1769, align 64, !tbaa !26
  %1771 = getelementptr inbounds nuw i8, ptr %1482, i64 576
  %1772 = load <8 x double>, ptr %1771, align 64, !tbaa !26
  %1773 = getelementptr inbounds nuw i8, ptr %1482, i64 640
  %1774 = load <8 x double>, ptr %1773, align 64, !tbaa !26
  %1775 = getelementptr inbounds nuw i8, ptr %1482, i64 1920
  %1776 = load <8 x double>, ptr %1775, align 64, !tbaa !26
  %1777 = add nsw i64 %1762, -1
  %1778 = getelementptr inbounds nuw i8, ptr %1482, i64 8064
  %1779 = load <8 x double>, ptr %1778, align 64, !tbaa !26
  %1780 = getelementptr inbounds nuw i8, ptr %1482, i64 7872
  %1781 = load <8 x double>, ptr %1780, align 64, !tbaa !26
  %1782 = getelementptr inbounds nuw i8, ptr %1482, i64 6016
  %1783 = load <8 x double>, ptr %1782, align 64, !tbaa !26
  %1784 = getelementptr inbounds nuw i8, ptr %1482, i64 4160
  %1785 = load <8 x double>, ptr %1784, align 64, !tbaa !26
  %1786 = fsub <8 x double> %1785, %1776
  %1787 = fmul <8 x double> %1783, %1786
  %1788 = getelementptr inbounds nuw i8, ptr %1482, i64 6080
  %1789 = load <8 x double>, ptr %1788, align 64, !tbaa !26, !noalias !100
  %1790 = getelementptr inbounds nuw i8, ptr %1482, i64 5056
  %1791 = load <8 x double>, ptr %1790, align 64, !tbaa !26, !noalias !100
  %1792 = fsub <8 x double> %1791, %1776
  %1793 = fmul <8 x double> %1789, %1792
  %1794 = getelementptr inbounds nuw i8, ptr %1482, i64 6144
  %1795 = load <8 x double>, ptr %1794, align 64, !tbaa !26, !noalias !100
  %1796 = getelementptr inbounds nuw i8, ptr %1482, i64 5952
  %1797 = load <8 x double>, ptr %1796, align 64, !tbaa !26, !noalias !100
  %1798 = fsub <8 x double> %1797, %1776
  %1799 = fmul <8 x double> %1795, %1798
  %1800 = getelementptr inbounds nuw i8, ptr %1482, i64 9544
  %1801 = load ptr, ptr %1800, align 8, !tbaa !86
  %1802 = getelementptr inbounds nuw i8, ptr %1482, i64 9552
  %1803 = load ptr, ptr %1802, align 16, !tbaa !47
  %1804 = getelementptr inbounds nuw i8, ptr %1482, i64 9560
  %1805 = load ptr, ptr %1804, align 8, !tbaa !65
  %1806 = getelementptr inbounds nuw i8, ptr %1482, i64 9608
  %1807 = load ptr, ptr %1806, align 8, !tbaa !76
  %1808 = getelementptr inbounds nuw i8, ptr %1482, i64 9616
  %1809 = load ptr, ptr %1808, align 16, !tbaa !48
  %1810 = getelementptr inbounds nuw i8, ptr %1482, i64 9632
  %1811 = load ptr, ptr %1810, align 32, !tbaa !37
  %1812 = getelementptr inbounds nuw i8, ptr %1482, i64 6272
  %1813 = load <8 x double>, ptr %1812, align 64, !tbaa !26
  %1814 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1763)
  %1815 = icmp eq i64 %1814, 0
  %1816 = getelementptr inbounds nuw i8, ptr %1482, i64 9600
  %1817 = load ptr, ptr %1816, align 64, !tbaa !87
  %1818 = getelementptr inbounds nuw i8, ptr %1482, i64 9584
  %1819 = load ptr, ptr %1818, align 16, !tbaa !88
  %1820 = getelementptr inbounds nuw i8, ptr %1482, i64 9592
  %1821 = load ptr, ptr %1820, align 8, !tbaa !89
  %1822 = load <8 x double>, ptr %1803, align 64, !tbaa !26
  %1823 = load <8 x double>, ptr %1805, align 64, !tbaa !26
  %1824 = fsub <8 x double> %1822, %1823
  %1825 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1813, <8 x double> %1824, <8 x double> %1822)
  br i1 %1815, label %1830, label %1826

1826:                                             ; preds = %1764
  %1827 = load <8 x double>, ptr %1801, align 64, !tbaa !26
  %1828 = icmp eq <8 x i64> %1763, zeroinitializer
  %1829 = select <8 x i1> %1828, <8 x double> %1825, <8 x double> %1827
  br label %1830

1830:                                             ; preds = %1764, %1826
  %1831 = phi <8 x double> [ %1829, %1826 ], [ %1825, %1764 ]
  %1832 = getelementptr inbounds %struct.Piece, ptr %1481, i64 %1753
  %1833 = getelementptr inbounds nuw i8, ptr %1832, i64 384
  %1834 = load <8 x double>, ptr %1833, align 64, !tbaa !26
  %1835 = getelementptr inbounds nuw i8, ptr %1832, i64 448
  %1836 = load <8 x double>, ptr %1835, align 64, !tbaa !26
  %1837 = getelementptr inbounds nuw i8, ptr %1832, i64 512
  %1838 = load <8 x double>, ptr %1837, align 64, !tbaa !26
  %1839 = getelementptr inbounds nuw i8, ptr %1832, i64 576
  %1840 = load <8 x double>, ptr %1839, align 64, !tbaa !26
  %1841 = getelementptr inbounds nuw i8, ptr %1832, i64 640
  %1842 = load <8 x double>, ptr %1841, align 64, !tbaa !26
  %1843 = getelementptr inbounds nuw i8, ptr %1832, i64 1920
  %1844 = load <8 x double>, ptr %1843, align 64, !tbaa !26
  %1845 = getelementptr inbounds nuw i8, ptr %1832, i64 8064
  %1846 = load <8 x double>, ptr %1845, align 64, !tbaa !26
  %1847 = getelementptr inbounds nuw i8, ptr %1832, i64 7872
  %1848 = load <8 x double>, ptr %1847, align 64, !tbaa !26
  %1849 = getelementptr inbounds nuw i8, ptr %1832, i64 6016
  %1850 = load <8 x double>, ptr %1849, align 64, !tbaa !26
  %1851 = getelementptr inbounds nuw i8, ptr %1832, i64 4160
  %1852 = load <8 x double>, ptr %1851, align 64, !tbaa !26
  %1853 = fsub <8 x double> %1852, %1844
  %1854 = fmul <8 x double> %1850, %1853
  %1855 = getelementptr inbounds nuw i8, ptr %1832, i64 6080
  %1856 = load <8 x double>, ptr %1855, align 64, !tbaa !26, !noalias !103
  %1857 = getelementptr inbounds nuw i8, ptr %1832, i64 5056
  %1858 = load <8 x double>, ptr %1857, align 64, !tbaa !26, !noalias !103
  %1859 = fsub <8 x double> %1858, %1844
  %1860 = fmul <8 x double> %1856, %1859
  %1861 = getelementptr inbounds nuw i8, ptr %1832, i64 6144
  %1862 = load <8 x double>, ptr %1861, align 64, !tbaa !26, !noalias !103
  %1863 = getelementptr inbounds nuw i8, ptr %1832, i64 5952
  %1864 = load <8 x double>, ptr %1863, align 64, !tbaa !26, !noalias !103
  %1865 = fsub <8 x double> %1864, %1844
  %1866 = fmul <8 x double> %1862, %1865
  %1867 = getelementptr inbounds nuw i8, ptr %1832, i64 9544
  %1868 = load ptr, ptr %1867, align 8, !tbaa !86
  %1869 = getelementptr inbounds nuw i8, ptr %1832, i64 9552
  %1870 = load ptr, ptr %1869, align 16, !tbaa !47
  %1871 = getelementptr inbounds nuw i8, ptr %1832, i64 9560
  %1872 = load ptr, ptr %1871, align 8, !tbaa !65
  %1873 = getelementptr inbounds nuw i8, ptr %1832, i64 9608
  %1874 = load ptr, ptr %1873, align 8, !tbaa !76
  %1875 = getelementptr inbounds nuw i8, ptr %1832, i64 9616
  %1876 = load ptr, ptr %1875, align 16, !tbaa !48
  %1877 = getelementptr inbounds nuw i8, ptr %1832, i64 9632
  %1878 = load ptr, ptr %1877, align 32, !tbaa !37
  %1879 = getelementptr inbounds nuw i8, ptr %1832, i64 6272
  %1880 = load <8 x double>, ptr %1879, align 64, !tbaa !26
  %1881 = getelementptr inbounds nuw i8, ptr %1832, i64 9600
  %1882 = load ptr, ptr %1881, align 64, !tbaa !87
  %1883 = getelementptr inbounds nuw i8, ptr %1832, i64 9584
  %1884 = load ptr, ptr %1883, align 16, !tbaa !88
  %1885 = getelementptr inbounds nuw i8, ptr %1832, i64 9592
  %1886 = load ptr, ptr %1885, align 8, !tbaa !89
  %1887 = load <8 x double>, ptr %1870, align 64, !tbaa !26
  %1888 = load <8 x double>, ptr %1872, align 64, !tbaa !26
  %1889 = fsub <8 x double> %1887, %1888
  %1890 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1880, <8 x double> %1889, <8 x double> %1887)
  br i1 %1815, label %1895, label %1891

1891:                                             ; preds = %1830
  %1892 = load <8 x double>, ptr %1868, align 64, !tbaa !26
  %1893 = icmp eq <8 x i64> %1763, zeroinitializer
  %1894 = select <8 x i1> %1893, <8 x double> %1890, <8 x double> %1892
  br label %1895

1895:                                             ; preds = %1830, %1891
  %1896 = phi <8 x double> [ %1894, %1891 ], [ %1890, %1830 ]
  br i1 %1475, label %1897, label %2196

1897:                                             ; preds = %1895
  %1898 = getelementptr inbounds nuw i8, ptr %1482, i64 7168
  %1899 = getelementptr inbounds nuw i8, ptr %1482, i64 7232
  %1900 = getelementptr inbounds nuw i8, ptr %1482, i64 7296
  %1901 = icmp eq <8 x i64> %1763, zeroinitializer
  %1902 = getelementptr inbounds nuw i8, ptr %1832, i64 7168
  %1903 = getelementptr inbounds nuw i8, ptr %1832, i64 7232
  %1904 = getelementptr inbounds nuw i8, ptr %1832, i64 7296
  br label %1905

1905:                                             ; preds = %1897, %2031
  %1906 = phi i64 [ 0, %1897 ], [ %2045, %2031 ]
  %1907 = phi <8 x double> [ zeroinitializer, %1897 ], [ %1983, %2031 ]
  %1908 = phi <8 x double> [ zeroinitializer, %1897 ], [ %1981, %2031 ]
  %1909 = phi <8 x double> [ zeroinitializer, %1897 ], [ %1961, %2031 ]
  %1910 = phi <8 x double> [ zeroinitializer, %1897 ], [ %1960, %2031 ]
  %1911 = phi <8 x double> [ zeroinitializer, %1897 ], [ %1956, %2031 ]
  %1912 = phi <8 x double> [ %1823, %1897 ], [ %1959, %2031 ]
  %1913 = phi <8 x double> [ %1822, %1897 ], [ %1958, %2031 ]
  %1914 = phi <8 x double> [ %1831, %1897 ], [ %1957, %2031 ]
  %1915 = phi <8 x double> [ zeroinitializer, %1897 ], [ %2043, %2031 ]
  %1916 = phi <8 x double> [ zeroinitializer, %1897 ], [ %2041, %2031 ]
  %1917 = phi <8 x double> [ zeroinitializer, %1897 ], [ %2022, %2031 ]
  %1918 = phi <8 x double> [ zeroinitializer, %1897 ], [ %2021, %2031 ]
  %1919 = phi <8 x double> [ zeroinitializer, %1897 ], [ %2017, %2031 ]
  %1920 = phi <8 x double> [ %1888, %1897 ], [ %2020, %2031 ]
  %1921 = phi <8 x double> [ %1887, %1897 ], [ %2019, %2031 ]
  %1922 = phi <8 x double> [ %1896, %1897 ], [ %2018, %2031 ]
  %1923 = load <8 x double>, ptr %1898, align 64, !tbaa !26
  %1924 = load <8 x double>, ptr %1899, align 64, !tbaa !26
  %1925 = load <8 x double>, ptr %1900, align 64, !tbaa !26
  %1926 = icmp slt i64 %1906, %1777
  br i1 %1926, label %1927, label %1955

1927:                                             ; preds = %1905
  %1928 = add nuw nsw i64 %1906, 1
  %1929 = getelementptr inbounds nuw <8 x double>, ptr %1803, i64 %1928
  %1930 = load <8 x double>, ptr %1929, align 64, !tbaa !26
  %1931 = getelementptr inbounds nuw <8 x double>, ptr %1805, i64 %1928
  %1932 = load <8 x double>, ptr %1931, align 64, !tbaa !26
  %1933 = fsub <8 x double> %1930, %1932
  %1934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1813, <8 x double> %1933, <8 x double> %1930)
  br i1 %1815, label %1939, label %1935

1935:                                             ; preds = %1927
  %1936 = getelementptr inbounds nuw <8 x double>, ptr %1801, i64 %1928
  %1937 = load <8 x double>, ptr %1936, align 64, !tbaa !26
  %1938 = select <8 x i1> %1901, <8 x double> %1934, <8 x double> %1937
  br label %1939

1939:                                             ; preds = %1927, %1935
  %1940 = phi <8 x double> [ %1938, %1935 ], [ %1934, %1927 ]
  %1941 = getelementptr inbounds nuw <8 x double>, ptr %1811, i64 %1928
  %1942 = load <8 x double>, ptr %1941, align 64, !tbaa !26, !noalias !106
  %1943 = fmul <8 x double> %1781, %1942
  %1944 = fadd <8 x double> %1914, %1940
  %1945 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1944, <8 x double> %1774, <8 x double> %1772)
  %1946 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1944, <8 x double> %1945, <8 x double> %1770)
  %1947 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1944, <8 x double> %1946, <8 x double> %1768)
  %1948 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1944, <8 x double> %1947, <8 x double> %1766)
  %1949 = fmul <8 x double> %1943, %1948
  %1950 = getelementptr inbounds nuw <8 x double>, ptr %1807, i64 %1928
  %1951 = load <8 x double>, ptr %1950, align 64, !tbaa !26, !noalias !106
  %1952 = fmul <8 x double> %1779, %1951
  %1953 = fsub <8 x double> %1949, %1952
  %1954 = fadd <8 x double> %1952, %1949
  br label %1955

1955:                                             ; preds = %1939, %1905
  %1956 = phi <8 x double> [ %1953, %1939 ], [ %1923, %1905 ]
  %1957 = phi <8 x double> [ %1940, %1939 ], [ %1914, %1905 ]
  %1958 = phi <8 x double> [ %1930, %1939 ], [ %1913, %1905 ]
  %1959 = phi <8 x double> [ %1932, %1939 ], [ %1912, %1905 ]
  %1960 = phi <8 x double> [ %1954, %1939 ], [ %1924, %1905 ]
  %1961 = phi <8 x double> [ zeroinitializer, %1939 ], [ %1925, %1905 ]
  %1962 = getelementptr inbounds nuw <8 x double>, ptr %1809, i64 %1906
  %1963 = load <8 x double>, ptr %1962, align 64, !tbaa !26
  %1964 = fmul <8 x double> %1799, %1912
  %1965 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1793, <8 x double> %1913, <8 x double> %1964)
  %1966 = fmul <8 x double> %1965, %1963
  %1967 = icmp eq i64 %1906, %1777
  br i1 %1967, label %1968, label %1971

1968:                                             ; preds = %1955
  %1969 = fsub <8 x double> %1909, %1961
  %1970 = fadd <8 x double> %1969, %1966
  br label %1971

1971:                                             ; preds = %1955, %1968
  %1972 = phi <8 x double> [ %1970, %1968 ], [ %1966, %1955 ]
  %1973 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1963, <8 x double> %1787, <8 x double> %1956)
  %1974 = fadd <8 x double> %1910, %1973
  %1975 = fneg <8 x double> %1911
  %1976 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1975, <8 x double> %1907, <8 x double> %1974)
  %1977 = fdiv <8 x double> splat (double 1.000000e+00), %1976
  %1978 = getelementptr inbounds nuw <8 x double>, ptr %1817, i64 %1906
  store <8 x double> %1911, ptr %1978, align 64, !tbaa !26
  %1979 = fneg <8 x double> %1972
  %1980 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1911, <8 x double> %1908, <8 x double> %1979)
  %1981 = fmul <8 x double> %1977, %1980
  %1982 = getelementptr inbounds nuw <8 x double>, ptr %1819, i64 %1906
  store <8 x double> %1981, ptr %1982, align 64, !tbaa !26
  %1983 = fmul <8 x double> %1960, %1977
  %1984 = getelementptr inbounds nuw <8 x double>, ptr %1821, i64 %1906
  store <8 x double> %1983, ptr %1984, align 64, !tbaa !26
  %1985 = load <8 x double>, ptr %1902, align 64, !tbaa !26
  %1986 = load <8 x double>, ptr %1903, align 64, !tbaa !26
  %1987 = load <8 x double>, ptr %1904, align 64, !tbaa !26
  br i1 %1926, label %1988, label %2016

1988:                                             ; preds = %1971
  %1989 = add nuw nsw i64 %1906, 1
  %1990 = getelementptr inbounds nuw <8 x double>, ptr %1870, i64 %1989
  %1991 = load <8 x double>, ptr %1990, align 64, !tbaa !26
  %1992 = getelementptr inbounds nuw <8 x double>, ptr %1872, i64 %1989
  %1993 = load <8 x double>, ptr %1992, align 64, !tbaa !26
  %1994 = fsub <8 x double> %1991, %1993
  %1995 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1880, <8 x double> %1994, <8 x double> %1991)
  br i1 %1815, label %2000, label %1996

1996:                                             ; preds = %1988
  %1997 = getelementptr inbounds nuw <8 x double>, ptr %1868, i64 %1989
  %1998 = load <8 x double>, ptr %1997, align 64, !tbaa !26
  %1999 = select <8 x i1> %1901, <8 x double> %1995, <8 x double> %1998
  br label %2000

2000:                                             ; preds = %1988, %1996
  %2001 = phi <8 x double> [ %1999, %1996 ], [ %1995, %1988 ]
  %2002 = getelementptr inbounds nuw <8 x double>, ptr %1878, i64 %1989
  %2003 = load <8 x double>, ptr %2002, align 64, !tbaa !26, !noalias !109
  %2004 = fmul <8 x double> %1848, %2003
  %2005 = fadd <8 x double> %1922, %2001
  %2006 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2005, <8 x double> %1842, <8 x double> %1840)
  %2007 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2005, <8 x double> %2006, <8 x double> %1838)
  %2008 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2005, <8 x double> %2007, <8 x double> %1836)
  %2009 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2005, <8 x double> %2008, <8 x double> %1834)
  %2010 = fmul <8 x double> %2004, %2009
  %2011 = getelementptr inbounds nuw <8 x double>, ptr %1874, i64 %1989
  %2012 = load <8 x double>, ptr %2011, align 64, !tbaa !26, !noalias !109
  %2013 = fmul <8 x double> %1846, %2012
  %2014 = fsub <8 x double> %2010, %2013
  %2015 = fadd <8 x double> %2013, %2010
  br label %2016

2016:                                             ; preds = %2000, %1971
  %2017 = phi <8 x double> [ %2014, %2000 ], [ %1985, %1971 ]
  %2018 = phi <8 x double> [ %2001, %2000 ], [ %1922, %1971 ]
  %2019 = phi <8 x double> [ %1991, %2000 ], [ %1921, %1971 ]
  %2020 = phi <8 x double> [ %1993, %2000 ], [ %1920, %1971 ]
  %2021 = phi <8 x double> [ %2015, %2000 ], [ %1986, %1971 ]
  %2022 = phi <8 x double> [ zeroinitializer, %2000 ], [ %1987, %1971 ]
  %2023 = getelementptr inbounds nuw <8 x double>, ptr %1876, i64 %1906
  %2024 = load <8 x double>, ptr %2023, align 64, !tbaa !26
  %2025 = fmul <8 x double> %1866, %1920
  %2026 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1860, <8 x double> %1921, <8 x double> %2025)
  %2027 = fmul <8 x double> %2026, %2024
  br i1 %1967, label %2028, label %2031

2028:                                             ; preds = %2016
  %2029 = fsub <8 x double> %1917, %2022
  %2030 = fadd <8 x double> %2029, %2027
  br label %2031

2031:                                             ; preds = %2016, %2028
  %2032 = phi <8 x double> [ %2030, %2028 ], [ %2027, %2016 ]
  %2033 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2024, <8 x double> %1854, <8 x double> %2017)
  %2034 = fadd <8 x double> %1918, %2033
  %2035 = fneg <8 x double> %1919
  %2036 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2035, <8 x double> %1915, <8 x double> %2034)
  %2037 = fdiv <8 x double> splat (double 1.000000e+00), %2036
  %2038 = getelementptr inbounds nuw <8 x double>, ptr %1882, i64 %1906
  store <8 x double> %1919, ptr %2038, align 64, !tbaa !26
  %2039 = fneg <8 x double> %2032
  %2040 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1919, <8 x double> %1916, <8 x double> %2039)
  %2041 = fmul <8 x double> %2037, %2040
  %2042 = getelementptr inbounds nuw <8 x double>, ptr %1884, i64 %1906
  store <8 x double> %2041, ptr %2042, align 64, !tbaa !26
  %2043 = fmul <8 x double> %2021, %2037
  %2044 = getelementptr inbounds nuw <8 x double>, ptr %1886, i64 %1906
  store <8 x double> %2043, ptr %2044, align 64, !tbaa !26
  %2045 = add nuw nsw i64 %1906, 1
  %2046 = icmp eq i64 %2045, %1472
  br i1 %2046, label %2196, label %1905, !llvm.loop !112

2047:                                             ; preds = %1755, %1758
  %2048 = phi <8 x i64> [ %1757, %1755 ], [ %1763, %1758 ]
  %2049 = phi i64 [ %1756, %1755 ], [ %1762, %1758 ]
  %2050 = getelementptr inbounds nuw i8, ptr %1482, i64 384
  %2051 = load <8 x double>, ptr %2050, align 64, !tbaa !26
  %2052 = getelementptr inbounds nuw i8, ptr %1482, i64 448
  %2053 = load <8 x double>, ptr %2052, align 64, !tbaa !26
  %2054 = getelementptr inbounds nuw i8, ptr %1482, i64 512
  %2055 = load <8 x double>, ptr %2054, align 64, !tbaa !26
  %2056 = getelementptr inbounds nuw i8, ptr %1482, i64 576
  %2057 = load <8 x double>, ptr %2056, align 64, !tbaa !26
  %2058 = getelementptr inbounds nuw i8, ptr %1482, i64 640
  %2059 = load <8 x double>, ptr %2058, align 64, !tbaa !26
  %2060 = getelementptr inbounds nuw i8, ptr %1482, i64 1920
  %2061 = load <8 x double>, ptr %2060, align 64, !tbaa !26
  %2062 = add nsw i64 %2049, -1
  %2063 = getelementptr inbounds nuw i8, ptr %1482, i64 8064
  %2064 = load <8 x double>, ptr %2063, align 64, !tbaa !26
  %2065 = getelementptr inbounds nuw i8, ptr %1482, i64 7872
  %2066 = load <8 x double>, ptr %2065, align 64, !tbaa !26
  %2067 = getelementptr inbounds nuw i8, ptr %1482, i64 6016
  %2068 = load <8 x double>, ptr %2067, align 64, !tbaa !26
  %2069 = getelementptr inbounds nuw i8, ptr %1482, i64 4160
  %2070 = load <8 x double>, ptr %2069, align 64, !tbaa !26
  %2071 = fsub <8 x double> %2070, %2061
  %2072 = fmul <8 x double> %2068, %2071
  %2073 = getelementptr inbounds nuw i8, ptr %1482, i64 6080
  %2074 = load <8 x double>, ptr %2073, align 64, !tbaa !26, !noalias !113
  %2075 = getelementptr inbounds nuw i8, ptr %1482, i64 5056
  %2076 = load <8 x double>, ptr %2075, align 64, !tbaa !26, !noalias !113
  %2077 = fsub <8 x double> %2076, %2061
  %2078 = fmul <8 x double> %2074, %2077
  %2079 = getelementptr inbounds nuw i8, ptr %1482, i64 6144
  %2080 = load <8 x double>, ptr %2079, align 64, !tbaa !26, !noalias !113
  %2081 = getelementptr inbounds nuw i8, ptr %1482, i64 5952
  %2082 = load <8 x double>, ptr %2081, align 64, !tbaa !26, !noalias !113
  %2083 = fsub <8 x double> %2082, %2061
  %2084 = fmul <8 x double> %2080, %2083
  %2085 = getelementptr inbounds nuw i8, ptr %1482, i64 9544
  %2086 = load ptr, ptr %2085, align 8, !tbaa !86
  %2087 = getelementptr inbounds nuw i8, ptr %1482, i64 9552
  %2088 = load ptr, ptr %2087, align 16, !tbaa !47
  %2089 = getelementptr inbounds nuw i8, ptr %1482, i64 9560
  %2090 = load ptr, ptr %2089, align 8, !tbaa !65
  %2091 = getelementptr inbounds nuw i8, ptr %1482, i64 9608
  %2092 = load ptr, ptr %2091, align 8, !tbaa !76
  %2093 = getelementptr inbounds nuw i8, ptr %1482, i64 9616
  %2094 = load ptr, ptr %2093, align 16, !tbaa !48
  %2095 = getelementptr inbounds nuw i8, ptr %1482, i64 9632
  %2096 = load ptr, ptr %2095, align 32, !tbaa !37
  %2097 = getelementptr inbounds nuw i8, ptr %1482, i64 6272
  %2098 = load <8 x double>, ptr %2097, align 64, !tbaa !26
  %2099 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2048)
  %2100 = icmp eq i64 %2099, 0
  %2101 = getelementptr inbounds nuw i8, ptr %1482, i64 9600
  %2102 = load ptr, ptr %2101, align 64, !tbaa !87
  %2103 = getelementptr inbounds nuw i8, ptr %1482, i64 9584
  %2104 = load ptr, ptr %2103, align 16, !tbaa !88
  %2105 = getelementptr inbounds nuw i8, ptr %1482, i64 9592
  %2106 = load ptr, ptr %2105, align 8, !tbaa !89
  %2107 = load <8 x double>, ptr %2088, align 64, !tbaa !26
  %2108 = load <8 x double>, ptr %2090, align 64, !tbaa !26
  %2109 = fsub <8 x double> %2107, %2108
  %2110 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2098, <8 x double> %2109, <8 x double> %2107)
  br i1 %2100, label %2115, label %2111

2111:                                             ; preds = %2047
  %2112 = load <8 x double>, ptr %2086, align 64, !tbaa !26
  %2113 = icmp eq <8 x i64> %2048, zeroinitializer
  %2114 = select <8 x i1> %2113, <8 x double> %2110, <8 x double> %2112
  br label %2115

2115:                                             ; preds = %2047, %2111
  %2116 = phi <8 x double> [ %2114, %2111 ], [ %2110, %2047 ]
  br i1 %1475, label %2117, label %2196

2117:                                             ; preds = %2115
  %2118 = getelementptr inbounds nuw i8, ptr %1482, i64 7168
  %2119 = getelementptr inbounds nuw i8, ptr %1482, i64 7232
  %2120 = getelementptr inbounds nuw i8, ptr %1482, i64 7296
  %2121 = icmp eq <8 x i64> %2048, zeroinitializer
  br label %2122

2122:                                             ; preds = %2117, %2180
  %2123 = phi i64 [ 0, %2117 ], [ %2194, %2180 ]
  %2124 = phi <8 x double> [ zeroinitializer, %2117 ], [ %2192, %2180 ]
  %2125 = phi <8 x double> [ zeroinitializer, %2117 ], [ %2190, %2180 ]
  %2126 = phi <8 x double> [ zeroinitializer, %2117 ], [ %2170, %2180 ]
  %2127 = phi <8 x double> [ zeroinitializer, %2117 ], [ %2169, %2180 ]
  %2128 = phi <8 x double> [ zeroinitializer, %2117 ], [ %2165, %2180 ]
  %2129 = phi <8 x double> [ %2108, %2117 ], [ %2168, %2180 ]
  %2130 = phi <8 x double> [ %2107, %2117 ], [ %2167, %2180 ]
  %2131 = phi <8 x double> [ %2116, %2117 ], [ %2166, %2180 ]
  %2132 = load <8 x double>, ptr %2118, align 64, !tbaa !26
  %2133 = load <8 x double>, ptr %2119, align 64, !tbaa !26
  %2134 = load <8 x double>, ptr %2120, align 64, !tbaa !26
  %2135 = icmp slt i64 %2123, %2062
  br i1 %2135, label %2136, label %2164

2136:                                             ; preds = %2122
  %2137 = add nuw nsw i64 %2123, 1
  %2138 = getelementptr inbounds nuw <8 x double>, ptr %2088, i64 %2137
  %2139 = load <8 x double>, ptr %2138, align 64, !tbaa !26
  %2140 = getelementptr inbounds nuw <8 x double>, ptr %2090, i64 %2137
  %2141 = load <8 x double>, ptr %2140, align 64, !tbaa !26
  %2142 = fsub <8 x double> %2139, %2141
  %2143 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2098, <8 x double> %2142, <8 x double> %2139)
  br i1 %2100, label %2148, label %2144

2144:                                             ; preds = %2136
  %2145 = getelementptr inbounds nuw <8 x double>, ptr %2086, i64 %2137
  %2146 = load <8 x double>, ptr %2145, align 64, !tbaa !26
  %2147 = select <8 x i1> %2121, <8 x double> %2143, <8 x double> %2146
  br label %2148

2148:                                             ; preds = %2136, %2144
  %2149 = phi <8 x double> [ %2147, %2144 ], [ %2143, %2136 ]
  %2150 = getelementptr inbounds nuw <8 x double>, ptr %2096, i64 %2137
  %2151 = load <8 x double>, ptr %2150, align 64, !tbaa !26, !noalias !116
  %2152 = fmul <8 x double> %2066, %2151
  %2153 = fadd <8 x double> %2131, %2149
  %2154 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2153, <8 x double> %2059, <8 x double> %2057)
  %2155 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2153, <8 x double> %2154, <8 x double> %2055)
  %2156 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2153, <8 x double> %2155, <8 x double> %2053)
  %2157 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2153, <8 x double> %2156, <8 x double> %2051)
  %2158 = fmul <8 x double> %2152, %2157
  %2159 = getelementptr inbounds nuw <8 x double>, ptr %2092, i64 %2137
  %2160 = load <8 x double>, ptr %2159, align 64, !tbaa !26, !noalias !116
  %2161 = fmul <8 x double> %2064, %2160
  %2162 = fsub <8 x double> %2158, %2161
  %2163 = fadd <8 x double> %2161, %2158
  br label %2164

2164:                                             ; preds = %2148, %2122
  %2165 = phi <8 x double> [ %2162, %2148 ], [ %2132, %2122 ]
  %2166 = phi <8 x double> [ %2149, %2148 ], [ %2131, %2122 ]
  %2167 = phi <8 x double> [ %2139, %2148 ], [ %2130, %2122 ]
  %2168 = phi <8 x double> [ %2141, %2148 ], [ %2129, %2122 ]
  %2169 = phi <8 x double> [ %2163, %2148 ], [ %2133, %2122 ]
  %2170 = phi <8 x double> [ zeroinitializer, %2148 ], [ %2134, %2122 ]
  %2171 = getelementptr inbounds nuw <8 x double>, ptr %2094, i64 %2123
  %2172 = load <8 x double>, ptr %2171, align 64, !tbaa !26
  %2173 = fmul <8 x double> %2084, %2129
  %2174 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2078, <8 x double> %2130, <8 x double> %2173)
  %2175 = fmul <8 x double> %2174, %2172
  %2176 = icmp eq i64 %2123, %2062
  br i1 %2176, label %2177, label %2180

2177:                                             ; preds = %2164
  %2178 = fsub <8 x double> %2126, %2170
  %2179 = fadd <8 x double> %2178, %2175
  br label %2180

2180:                                             ; preds = %2164, %2177
  %2181 = phi <8 x double> [ %2179, %2177 ], [ %2175, %2164 ]
  %2182 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2172, <8 x double> %2072, <8 x double> %2165)
  %2183 = fadd <8 x double> %2127, %2182
  %2184 = fneg <8 x double> %2128
  %2185 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2184, <8 x double> %2124, <8 x double> %2183)
  %2186 = fdiv <8 x double> splat (double 1.000000e+00), %2185
  %2187 = getelementptr inbounds nuw <8 x double>, ptr %2102, i64 %2123
  store <8 x double> %2128, ptr %2187, align 64, !tbaa !26
  %2188 = fneg <8 x double> %2181
  %2189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2128, <8 x double> %2125, <8 x double> %2188)
  %2190 = fmul <8 x double> %2186, %2189
  %2191 = getelementptr inbounds nuw <8 x double>, ptr %2104, i64 %2123
  store <8 x double> %2190, ptr %2191, align 64, !tbaa !26
  %2192 = fmul <8 x double> %2169, %2186
  %2193 = getelementptr inbounds nuw <8 x double>, ptr %2106, i64 %2123
  store <8 x double> %2192, ptr %2193, align 64, !tbaa !26
  %2194 = add nuw nsw i64 %2123, 1
  %2195 = icmp eq i64 %2194, %1472
  br i1 %2195, label %2196, label %2122, !llvm.loop !119

2196:                                             ; preds = %1717, %2180, %2031, %1557, %2115, %1895
  %2197 = phi i64 [ %1753, %1895 ], [ %1480, %2115 ], [ %1480, %1557 ], [ %1753, %2031 ], [ %1480, %2180 ], [ %1480, %1717 ]
  %2198 = add nsw i64 %2197, 1
  %2199 = load i64, ptr %153, align 8, !tbaa !20
  %2200 = icmp slt i64 %2198, %2199
  br i1 %2200, label %1478, label %1476, !llvm.loop !120

2201:                                             ; preds = %1462, %2509
  %2202 = phi i64 [ %2645, %2509 ], [ 0, %1462 ]
  %2203 = load ptr, ptr %126, align 8, !tbaa !28
  %2204 = getelementptr inbounds nuw %struct.Piece, ptr %2203, i64 %2202
  %2205 = load <8 x i64>, ptr %171, align 64, !tbaa !26
  %2206 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2205)
  %2207 = icmp eq i64 %2206, 0
  br i1 %2207, label %2208, label %2235

2208:                                             ; preds = %2201
  %2209 = getelementptr inbounds nuw i8, ptr %2204, i64 9408
  %2210 = load <8 x i64>, ptr %2209, align 64, !tbaa !26
  %2211 = getelementptr inbounds nuw i8, ptr %2204, i64 3456
  %2212 = load <8 x double>, ptr %2211, align 64, !tbaa !26
  %2213 = getelementptr inbounds nuw i8, ptr %2204, i64 8640
  %2214 = load <8 x double>, ptr %2213, align 64, !tbaa !26
  %2215 = getelementptr inbounds nuw i8, ptr %2204, i64 6080
  %2216 = load <8 x double>, ptr %2215, align 64, !tbaa !26
  %2217 = getelementptr inbounds nuw i8, ptr %2204, i64 6144
  %2218 = load <8 x double>, ptr %2217, align 64, !tbaa !26
  %2219 = getelementptr inbounds nuw i8, ptr %2204, i64 9280
  %2220 = load <8 x i64>, ptr %2219, align 64, !tbaa !26
  %2221 = getelementptr inbounds nuw i8, ptr %2204, i64 2368
  %2222 = load <8 x double>, ptr %2221, align 64, !tbaa !26
  %2223 = load <8 x double>, ptr %2204, align 64, !tbaa !26
  %2224 = getelementptr inbounds nuw i8, ptr %2204, i64 3328
  %2225 = load <8 x double>, ptr %2224, align 64, !tbaa !26
  %2226 = getelementptr inbounds nuw i8, ptr %2204, i64 8704
  %2227 = load <8 x double>, ptr %2226, align 64, !tbaa !26
  %2228 = getelementptr inbounds nuw i8, ptr %2204, i64 6016
  %2229 = load <8 x double>, ptr %2228, align 64, !tbaa !26
  %2230 = getelementptr inbounds nuw i8, ptr %2204, i64 6464
  %2231 = load <8 x double>, ptr %2230, align 64, !tbaa !26
  %2232 = fmul <8 x double> %2212, %2214
  %2233 = fsub <8 x double> %2223, %2225
  %2234 = fmul <8 x double> %2233, %2227
  br label %2391

2235:                                             ; preds = %2201
  %2236 = getelementptr inbounds nuw i8, ptr %2204, i64 3584
  %2237 = getelementptr inbounds nuw i8, ptr %2204, i64 3456
  %2238 = load <8 x double>, ptr %2237, align 64, !tbaa !26, !noalias !121
  %2239 = getelementptr inbounds nuw i8, ptr %2204, i64 8640
  %2240 = load <8 x double>, ptr %2239, align 64, !tbaa !26, !noalias !121
  %2241 = fmul <8 x double> %2238, %2240
  %2242 = fcmp ogt <8 x double> %2241, zeroinitializer
  %2243 = select <8 x i1> %2242, <8 x double> %2241, <8 x double> zeroinitializer
  %2244 = fcmp uge <8 x double> %2243, splat (double 1.000000e+00)
  %2245 = select <8 x i1> %2244, <8 x double> splat (double 1.000000e+00), <8 x double> %2243
  %2246 = getelementptr inbounds nuw i8, ptr %2204, i64 9408
  %2247 = load <8 x i64>, ptr %2246, align 64, !tbaa !26, !noalias !121
  %2248 = load <8 x double>, ptr %164, align 64, !tbaa !26, !noalias !121
  %2249 = load <8 x double>, ptr %2236, align 64, !tbaa !26, !noalias !121
  %2250 = icmp eq <8 x i64> %2247, zeroinitializer
  %2251 = select <8 x i1> %2250, <8 x double> %2249, <8 x double> %2248
  %2252 = getelementptr inbounds nuw i8, ptr %2204, i64 3968
  %2253 = load <8 x double>, ptr %2252, align 64, !tbaa !26, !noalias !121
  %2254 = fsub <8 x double> splat (double 1.000000e+00), %2245
  %2255 = getelementptr inbounds nuw i8, ptr %2204, i64 2368
  %2256 = load <8 x double>, ptr %2255, align 64, !tbaa !26, !noalias !121
  %2257 = getelementptr inbounds nuw i8, ptr %2204, i64 9280
  %2258 = load <8 x i64>, ptr %2257, align 64, !tbaa !26, !noalias !121
  %2259 = load <8 x double>, ptr %2204, align 64, !tbaa !26, !noalias !121
  %2260 = getelementptr inbounds nuw i8, ptr %2204, i64 3328
  %2261 = load <8 x double>, ptr %2260, align 64, !tbaa !26, !noalias !121
  %2262 = fsub <8 x double> %2259, %2261
  %2263 = getelementptr inbounds nuw i8, ptr %2204, i64 8704
  %2264 = load <8 x double>, ptr %2263, align 64, !tbaa !26, !noalias !121
  %2265 = fmul <8 x double> %2262, %2264
  %2266 = icmp eq <8 x i64> %2258, zeroinitializer
  %2267 = select <8 x i1> %2266, <8 x double> zeroinitializer, <8 x double> %2265
  %2268 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2254, <8 x double> %2256, <8 x double> %2267)
  %2269 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2253, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2270 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2253, <8 x double> %2269, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2271 = fdiv <8 x double> splat (double 1.000000e+00), %2270
  %2272 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2251, <8 x double> %2268, <8 x double> splat (double 1.000000e+00))
  %2273 = fdiv <8 x double> splat (double 1.000000e+00), %2272
  %2274 = load <8 x double>, ptr %165, align 64, !tbaa !26, !noalias !121
  %2275 = load <8 x double>, ptr %162, align 64, !tbaa !26, !noalias !121
  %2276 = select <8 x i1> %2250, <8 x double> %2275, <8 x double> %2274
  %2277 = fsub <8 x double> %2276, %2253
  %2278 = fmul <8 x double> %2277, %2273
  %2279 = fmul <8 x double> %2251, %2278
  %2280 = getelementptr inbounds nuw i8, ptr %2204, i64 6016
  %2281 = load <8 x double>, ptr %2280, align 64, !tbaa !26, !noalias !121
  %2282 = getelementptr inbounds nuw i8, ptr %2204, i64 3648
  %2283 = load <8 x double>, ptr %2282, align 64, !tbaa !26, !noalias !121
  %2284 = getelementptr inbounds nuw i8, ptr %2204, i64 6080
  %2285 = load <8 x double>, ptr %2284, align 64, !tbaa !26, !noalias !121
  %2286 = getelementptr inbounds nuw i8, ptr %2204, i64 4544
  %2287 = load <8 x double>, ptr %2286, align 64, !tbaa !26, !noalias !121
  %2288 = fmul <8 x double> %2285, %2287
  %2289 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2281, <8 x double> %2283, <8 x double> %2288)
  %2290 = getelementptr inbounds nuw i8, ptr %2204, i64 6144
  %2291 = load <8 x double>, ptr %2290, align 64, !tbaa !26, !noalias !121
  %2292 = getelementptr inbounds nuw i8, ptr %2204, i64 5440
  %2293 = load <8 x double>, ptr %2292, align 64, !tbaa !26, !noalias !121
  %2294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2291, <8 x double> %2293, <8 x double> %2289)
  %2295 = getelementptr inbounds nuw i8, ptr %2204, i64 8768
  %2296 = load <8 x double>, ptr %2295, align 64, !tbaa !26, !noalias !121
  %2297 = fmul <8 x double> %2264, %2296
  %2298 = fcmp ule <8 x double> %2245, zeroinitializer
  %2299 = or <8 x i1> %2244, %2298
  %2300 = fmul <8 x double> %2240, %2256
  %2301 = select <8 x i1> %2299, <8 x double> zeroinitializer, <8 x double> %2300
  %2302 = select <8 x i1> %2266, <8 x double> %2301, <8 x double> %2297
  %2303 = fmul <8 x double> %2251, %2279
  %2304 = fmul <8 x double> %2273, %2303
  %2305 = fmul <8 x double> %2271, %2304
  %2306 = fmul <8 x double> %2305, %2302
  %2307 = getelementptr inbounds nuw i8, ptr %2204, i64 6208
  %2308 = load <8 x double>, ptr %2307, align 64, !tbaa !26, !noalias !121
  %2309 = fmul <8 x double> %2308, %2306
  %2310 = fadd <8 x double> %2309, splat (double 1.000000e+00)
  %2311 = fdiv <8 x double> splat (double 1.000000e+00), %2310
  %2312 = getelementptr inbounds nuw i8, ptr %2204, i64 3840
  %2313 = load <8 x double>, ptr %2312, align 64, !tbaa !26, !noalias !121
  %2314 = fsub <8 x double> %2279, %2313
  %2315 = getelementptr inbounds nuw i8, ptr %2204, i64 6528
  %2316 = load <8 x double>, ptr %2315, align 64, !tbaa !26, !noalias !121
  %2317 = fsub <8 x double> %2294, %2316
  %2318 = fmul <8 x double> %2309, %2317
  %2319 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2314, <8 x double> %2271, <8 x double> %2318)
  %2320 = fmul <8 x double> %2319, %2311
  %2321 = getelementptr inbounds nuw i8, ptr %2204, i64 6464
  %2322 = load <8 x double>, ptr %2321, align 64, !tbaa !26, !noalias !121
  %2323 = fcmp ule <8 x double> %2322, zeroinitializer
  %2324 = fcmp ule <8 x double> %2320, zeroinitializer
  %2325 = or <8 x i1> %2323, %2324
  %2326 = select <8 x i1> %2325, <8 x double> zeroinitializer, <8 x double> %2320
  %2327 = getelementptr inbounds nuw i8, ptr %2204, i64 2560
  %2328 = load <8 x double>, ptr %2327, align 64, !tbaa !26, !noalias !121
  %2329 = fcmp ogt <8 x double> %2328, zeroinitializer
  %2330 = getelementptr inbounds nuw i8, ptr %2204, i64 1408
  %2331 = load <8 x double>, ptr %2330, align 64, !tbaa !26, !noalias !121
  %2332 = bitcast <8 x i1> %2329 to i8
  %2333 = icmp eq i8 %2332, 0
  br i1 %2333, label %2346, label %2334

2334:                                             ; preds = %2235
  %2335 = getelementptr inbounds nuw i8, ptr %2204, i64 4032
  %2336 = load <8 x double>, ptr %2335, align 64, !tbaa !26, !noalias !121
  %2337 = fadd <8 x double> %2278, %2336
  %2338 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2337)
  %2339 = fcmp ogt <8 x double> %2328, splat (double 1.000000e-09)
  %2340 = select <8 x i1> %2339, <8 x double> %2328, <8 x double> splat (double 1.000000e-09)
  %2341 = fdiv <8 x double> %2338, %2340
  %2342 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2341)
  %2343 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2342)
  %2344 = select <8 x i1> %2329, <8 x double> %2343, <8 x double> splat (double 1.000000e+00)
  %2345 = fmul <8 x double> %2331, %2344
  br label %2346

2346:                                             ; preds = %2334, %2235
  %2347 = phi <8 x double> [ %2345, %2334 ], [ %2331, %2235 ]
  %2348 = getelementptr inbounds nuw i8, ptr %2204, i64 4480
  %2349 = load <8 x double>, ptr %2348, align 64, !tbaa !26, !noalias !121
  %2350 = getelementptr inbounds nuw i8, ptr %2204, i64 5376
  %2351 = load <8 x double>, ptr %2350, align 64, !tbaa !26, !noalias !121
  %2352 = fmul <8 x double> %2291, %2351
  %2353 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2285, <8 x double> %2349, <8 x double> %2352)
  %2354 = getelementptr inbounds nuw i8, ptr %2204, i64 1600
  %2355 = load <8 x double>, ptr %2354, align 64, !tbaa !26, !noalias !121
  %2356 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2355, <8 x double> %2281, <8 x double> splat (double 1.000000e+00))
  %2357 = fdiv <8 x double> splat (double 1.000000e+00), %2356
  %2358 = fmul <8 x double> %2273, %2278
  %2359 = fmul <8 x double> %2271, %2358
  %2360 = fmul <8 x double> %2359, %2311
  %2361 = select <8 x i1> %2325, <8 x double> zeroinitializer, <8 x double> %2360
  %2362 = getelementptr inbounds nuw i8, ptr %2204, i64 1472
  %2363 = load <8 x double>, ptr %2362, align 64, !tbaa !26, !noalias !121
  %2364 = fmul <8 x double> %2347, splat (double 2.500000e-01)
  %2365 = fmul <8 x double> %2268, %2364
  %2366 = fneg <8 x double> %2273
  %2367 = fmul <8 x double> %2365, %2366
  %2368 = select <8 x i1> %2329, <8 x double> %2367, <8 x double> splat (double -0.000000e+00)
  %2369 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2363, <8 x double> %2361, <8 x double> %2368)
  %2370 = fadd <8 x double> %2316, %2326
  %2371 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2363, <8 x double> %2370, <8 x double> %2347)
  %2372 = fneg <8 x double> %2355
  %2373 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2372, <8 x double> %2353, <8 x double> %2371)
  %2374 = fneg <8 x double> %2251
  %2375 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2357, <8 x double> %2373, <8 x double> %2374)
  %2376 = fmul <8 x double> %2357, %2369
  %2377 = fcmp olt <8 x double> %2376, splat (double 8.000000e-01)
  %2378 = select <8 x i1> %2377, <8 x double> %2376, <8 x double> splat (double 8.000000e-01)
  %2379 = fsub <8 x double> splat (double 1.000000e+00), %2378
  %2380 = fdiv <8 x double> %2375, %2379
  %2381 = fadd <8 x double> %2251, %2380
  %2382 = getelementptr inbounds nuw i8, ptr %2204, i64 1536
  %2383 = load <8 x double>, ptr %2382, align 64, !tbaa !26, !noalias !121
  %2384 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2372, <8 x double> %2353, <8 x double> %2383)
  %2385 = fmul <8 x double> %2357, %2384
  %2386 = fcmp olt <8 x double> %2381, %2385
  %2387 = select <8 x i1> %2386, <8 x double> %2381, <8 x double> %2385
  %2388 = select <8 x i1> %2250, <8 x double> %2387, <8 x double> %2248
  %2389 = icmp eq <8 x i64> %2205, zeroinitializer
  %2390 = select <8 x i1> %2389, <8 x double> %2249, <8 x double> %2388
  store <8 x double> %2390, ptr %2236, align 64, !tbaa !26
  br label %2391

2391:                                             ; preds = %2208, %2346
  %2392 = phi <8 x double> [ %2234, %2208 ], [ %2265, %2346 ]
  %2393 = phi <8 x double> [ %2233, %2208 ], [ %2262, %2346 ]
  %2394 = phi <8 x double> [ %2232, %2208 ], [ %2241, %2346 ]
  %2395 = phi <8 x double> [ %2231, %2208 ], [ %2322, %2346 ]
  %2396 = phi <8 x double> [ %2229, %2208 ], [ %2281, %2346 ]
  %2397 = phi <8 x double> [ %2225, %2208 ], [ %2261, %2346 ]
  %2398 = phi <8 x double> [ %2222, %2208 ], [ %2256, %2346 ]
  %2399 = phi <8 x i64> [ %2220, %2208 ], [ %2258, %2346 ]
  %2400 = phi <8 x double> [ %2218, %2208 ], [ %2291, %2346 ]
  %2401 = phi <8 x double> [ %2216, %2208 ], [ %2285, %2346 ]
  %2402 = phi <8 x i64> [ %2210, %2208 ], [ %2247, %2346 ]
  %2403 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %2404 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %2405 = icmp eq <8 x i64> %2402, zeroinitializer
  %2406 = select <8 x i1> %2405, <8 x double> %2404, <8 x double> %2403
  %2407 = getelementptr inbounds nuw i8, ptr %2204, i64 6336
  store <8 x double> %2406, ptr %2407, align 64, !tbaa !26
  %2408 = fcmp ogt <8 x double> %2394, zeroinitializer
  %2409 = select <8 x i1> %2408, <8 x double> %2394, <8 x double> zeroinitializer
  %2410 = fcmp olt <8 x double> %2409, splat (double 1.000000e+00)
  %2411 = select <8 x i1> %2410, <8 x double> %2409, <8 x double> splat (double 1.000000e+00)
  %2412 = getelementptr inbounds nuw i8, ptr %2204, i64 2496
  %2413 = load <8 x double>, ptr %2412, align 64, !tbaa !26
  %2414 = fmul <8 x double> %2411, splat (double 4.180000e+03)
  %2415 = getelementptr inbounds nuw i8, ptr %2204, i64 1280
  %2416 = load <8 x double>, ptr %2415, align 64, !tbaa !26
  %2417 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2414, <8 x double> %2416, <8 x double> %2413)
  %2418 = getelementptr inbounds nuw i8, ptr %2204, i64 4864
  %2419 = load <8 x double>, ptr %2418, align 64, !tbaa !26
  %2420 = getelementptr inbounds nuw i8, ptr %2204, i64 5760
  %2421 = load <8 x double>, ptr %2420, align 64, !tbaa !26
  %2422 = fmul <8 x double> %2400, %2421
  %2423 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2401, <8 x double> %2419, <8 x double> %2422)
  %2424 = fcmp ule <8 x double> %2413, zeroinitializer
  %2425 = getelementptr inbounds nuw i8, ptr %2204, i64 8256
  store <8 x double> %2411, ptr %2425, align 64, !tbaa !26
  %2426 = fsub <8 x double> splat (double 1.000000e+00), %2411
  %2427 = icmp eq <8 x i64> %2399, zeroinitializer
  %2428 = select <8 x i1> %2427, <8 x double> zeroinitializer, <8 x double> %2392
  %2429 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2426, <8 x double> %2398, <8 x double> %2428)
  %2430 = getelementptr inbounds nuw i8, ptr %2204, i64 9216
  store <8 x double> %2429, ptr %2430, align 64, !tbaa !26
  %2431 = fmul <8 x double> %2417, %2396
  %2432 = icmp eq <8 x i64> %2399, splat (i64 -1)
  %2433 = select <8 x i1> %2424, <8 x i1> splat (i1 true), <8 x i1> %2432
  %2434 = select <8 x i1> %2433, <8 x double> zeroinitializer, <8 x double> %2431
  %2435 = getelementptr inbounds nuw i8, ptr %2204, i64 8320
  store <8 x double> %2434, ptr %2435, align 64, !tbaa !26
  %2436 = fmul <8 x double> %2417, %2423
  %2437 = select <8 x i1> %2433, <8 x double> zeroinitializer, <8 x double> %2436
  %2438 = getelementptr inbounds nuw i8, ptr %2204, i64 8384
  store <8 x double> %2437, ptr %2438, align 64, !tbaa !26
  %2439 = getelementptr inbounds nuw i8, ptr %2204, i64 8128
  store <8 x double> %2395, ptr %2439, align 64, !tbaa !26
  %2440 = getelementptr inbounds nuw i8, ptr %2204, i64 2944
  %2441 = load <8 x double>, ptr %2440, align 64, !tbaa !26
  %2442 = getelementptr inbounds nuw i8, ptr %2204, i64 3008
  %2443 = load <8 x double>, ptr %2442, align 64, !tbaa !26
  %2444 = getelementptr inbounds nuw i8, ptr %2204, i64 3072
  %2445 = load <8 x double>, ptr %2444, align 64, !tbaa !26
  %2446 = getelementptr inbounds nuw i8, ptr %2204, i64 3136
  %2447 = load <8 x double>, ptr %2446, align 64, !tbaa !26
  %2448 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2447, <8 x double> %2445)
  %2449 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2448, <8 x double> %2443)
  %2450 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2449, <8 x double> %2441)
  %2451 = getelementptr inbounds nuw i8, ptr %2204, i64 4160
  store <8 x double> %2450, ptr %2451, align 64, !tbaa !26
  %2452 = getelementptr inbounds nuw i8, ptr %2204, i64 5056
  %2453 = load <8 x double>, ptr %2452, align 64, !tbaa !26
  %2454 = fmul <8 x double> %2401, %2453
  %2455 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2396, <8 x double> %2450, <8 x double> %2454)
  %2456 = getelementptr inbounds nuw i8, ptr %2204, i64 5952
  %2457 = load <8 x double>, ptr %2456, align 64, !tbaa !26
  %2458 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> %2457, <8 x double> %2455)
  %2459 = fmul <8 x double> %2458, splat (double 5.000000e-01)
  %2460 = getelementptr inbounds nuw i8, ptr %2204, i64 8064
  store <8 x double> %2459, ptr %2460, align 64, !tbaa !26
  %2461 = getelementptr inbounds nuw i8, ptr %2204, i64 2688
  %2462 = load <8 x double>, ptr %2461, align 64, !tbaa !26
  %2463 = getelementptr inbounds nuw i8, ptr %2204, i64 2752
  %2464 = load <8 x double>, ptr %2463, align 64, !tbaa !26
  %2465 = getelementptr inbounds nuw i8, ptr %2204, i64 2816
  %2466 = load <8 x double>, ptr %2465, align 64, !tbaa !26
  %2467 = getelementptr inbounds nuw i8, ptr %2204, i64 2880
  %2468 = load <8 x double>, ptr %2467, align 64, !tbaa !26
  %2469 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2468, <8 x double> %2466)
  %2470 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2469, <8 x double> %2464)
  %2471 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2470, <8 x double> %2462)
  %2472 = getelementptr inbounds nuw i8, ptr %2204, i64 8000
  store <8 x double> %2471, ptr %2472, align 64, !tbaa !26
  %2473 = getelementptr inbounds nuw i8, ptr %2204, i64 9472
  %2474 = load i64, ptr %2473, align 64, !tbaa !31
  %2475 = icmp eq i64 %2474, 0
  br i1 %2475, label %2476, label %2485

2476:                                             ; preds = %2391
  %2477 = fdiv <8 x double> %2471, %2397
  %2478 = getelementptr inbounds nuw i8, ptr %2204, i64 7872
  store <8 x double> %2477, ptr %2478, align 64, !tbaa !26
  %2479 = load i64, ptr %115, align 16, !tbaa !21
  %2480 = getelementptr inbounds nuw i8, ptr %2204, i64 9632
  %2481 = load ptr, ptr %2480, align 32, !tbaa !37
  %2482 = getelementptr inbounds <8 x double>, ptr %2481, i64 %2479
  %2483 = load <8 x double>, ptr %2482, align 64, !tbaa !26
  %2484 = fmul <8 x double> %2477, %2483
  br label %2509

2485:                                             ; preds = %2391
  %2486 = getelementptr inbounds nuw i8, ptr %2204, i64 64
  %2487 = load <8 x double>, ptr %2486, align 64, !tbaa !26
  %2488 = fsub <8 x double> %2397, %2487
  %2489 = fdiv <8 x double> splat (double 1.000000e+00), %2488
  %2490 = getelementptr inbounds nuw i8, ptr %2204, i64 7872
  store <8 x double> %2489, ptr %2490, align 64, !tbaa !26
  %2491 = load i64, ptr %115, align 16, !tbaa !21
  %2492 = getelementptr inbounds nuw i8, ptr %2204, i64 9632
  %2493 = load ptr, ptr %2492, align 32, !tbaa !37
  %2494 = shl nsw i64 %2491, 8
  %2495 = getelementptr inbounds i8, ptr %2493, i64 %2494
  %2496 = load <8 x double>, ptr %2495, align 64, !tbaa !26
  %2497 = getelementptr inbounds nuw i8, ptr %2495, i64 64
  %2498 = load <8 x double>, ptr %2497, align 64, !tbaa !26
  %2499 = getelementptr inbounds nuw i8, ptr %2495, i64 128
  %2500 = load <8 x double>, ptr %2499, align 64, !tbaa !26
  %2501 = getelementptr inbounds nuw i8, ptr %2495, i64 192
  %2502 = load <8 x double>, ptr %2501, align 64, !tbaa !26
  %2503 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2502, <8 x double> %2500)
  %2504 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2503, <8 x double> %2498)
  %2505 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2397, <8 x double> %2504, <8 x double> %2496)
  %2506 = icmp sgt i64 %2491, %2474
  %2507 = fmul <8 x double> %2489, %2505
  %2508 = select i1 %2506, <8 x double> %2507, <8 x double> %2505
  br label %2509

2509:                                             ; preds = %2476, %2485
  %2510 = phi <8 x double> [ %2484, %2476 ], [ %2508, %2485 ]
  %2511 = getelementptr inbounds nuw i8, ptr %2204, i64 3584
  %2512 = load <8 x double>, ptr %2511, align 64, !tbaa !26
  %2513 = getelementptr inbounds nuw i8, ptr %2204, i64 6400
  %2514 = load <8 x double>, ptr %2513, align 64, !tbaa !26
  %2515 = fcmp ogt <8 x double> %2393, splat (double 0x3D719799812DEA11)
  %2516 = select <8 x i1> %2515, <8 x double> %2393, <8 x double> splat (double 0x3D719799812DEA11)
  %2517 = getelementptr inbounds nuw i8, ptr %2204, i64 1088
  %2518 = load <8 x double>, ptr %2517, align 64, !tbaa !26
  %2519 = fdiv <8 x double> %2518, %2516
  %2520 = getelementptr inbounds nuw i8, ptr %2204, i64 7936
  store <8 x double> %2519, ptr %2520, align 64, !tbaa !26
  %2521 = load i64, ptr %115, align 16, !tbaa !21
  %2522 = add nsw i64 %2521, -1
  %2523 = load <8 x i64>, ptr %171, align 64, !tbaa !26
  %2524 = getelementptr inbounds nuw i8, ptr %2204, i64 9544
  %2525 = load ptr, ptr %2524, align 8, !tbaa !86
  %2526 = getelementptr inbounds <8 x double>, ptr %2525, i64 %2522
  %2527 = load <8 x double>, ptr %2526, align 64, !tbaa !26
  %2528 = getelementptr inbounds nuw i8, ptr %2204, i64 9552
  %2529 = load ptr, ptr %2528, align 16, !tbaa !47
  %2530 = getelementptr inbounds <8 x double>, ptr %2529, i64 %2522
  %2531 = load <8 x double>, ptr %2530, align 64, !tbaa !26
  %2532 = getelementptr inbounds nuw i8, ptr %2204, i64 6272
  %2533 = load <8 x double>, ptr %2532, align 64, !tbaa !26
  %2534 = getelementptr inbounds nuw i8, ptr %2204, i64 9560
  %2535 = load ptr, ptr %2534, align 8, !tbaa !65
  %2536 = getelementptr inbounds <8 x double>, ptr %2535, i64 %2522
  %2537 = load <8 x double>, ptr %2536, align 64, !tbaa !26
  %2538 = fsub <8 x double> %2531, %2537
  %2539 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2533, <8 x double> %2538, <8 x double> %2531)
  %2540 = icmp eq <8 x i64> %2523, zeroinitializer
  %2541 = select <8 x i1> %2540, <8 x double> %2539, <8 x double> %2527
  %2542 = getelementptr inbounds nuw i8, ptr %2204, i64 192
  %2543 = load <8 x double>, ptr %2542, align 64, !tbaa !26
  %2544 = getelementptr inbounds nuw i8, ptr %2204, i64 256
  %2545 = load <8 x double>, ptr %2544, align 64, !tbaa !26
  %2546 = getelementptr inbounds nuw i8, ptr %2204, i64 320
  %2547 = load <8 x double>, ptr %2546, align 64, !tbaa !26
  %2548 = fmul <8 x double> %2514, %2547
  %2549 = fmul <8 x double> %2548, splat (double 0x3FD5555555555555)
  %2550 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2545, <8 x double> splat (double 5.000000e-01), <8 x double> %2549)
  %2551 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2514, <8 x double> %2550, <8 x double> %2543)
  %2552 = fmul <8 x double> %2514, %2551
  %2553 = getelementptr inbounds nuw i8, ptr %2204, i64 704
  %2554 = load <8 x double>, ptr %2553, align 64, !tbaa !26, !noalias !124
  %2555 = getelementptr inbounds nuw i8, ptr %2204, i64 768
  %2556 = load <8 x double>, ptr %2555, align 64, !tbaa !26, !noalias !124
  %2557 = getelementptr inbounds nuw i8, ptr %2204, i64 832
  %2558 = load <8 x double>, ptr %2557, align 64, !tbaa !26, !noalias !124
  %2559 = getelementptr inbounds nuw i8, ptr %2204, i64 896
  %2560 = load <8 x double>, ptr %2559, align 64, !tbaa !26, !noalias !124
  %2561 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2541, <8 x double> %2560, <8 x double> %2558)
  %2562 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2541, <8 x double> %2561, <8 x double> %2556)
  %2563 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2541, <8 x double> %2562, <8 x double> %2554)
  %2564 = fmul <8 x double> %2541, %2563
  %2565 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2564, <8 x double> %2547, <8 x double> %2545)
  %2566 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2564, <8 x double> %2565, <8 x double> %2543)
  %2567 = fdiv <8 x double> splat (double 1.000000e+00), %2566
  %2568 = fmul <8 x double> %2547, %2564
  %2569 = fmul <8 x double> %2568, splat (double 0x3FD5555555555555)
  %2570 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2545, <8 x double> splat (double 5.000000e-01), <8 x double> %2569)
  %2571 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2564, <8 x double> %2570, <8 x double> %2543)
  %2572 = fmul <8 x double> %2564, %2571
  %2573 = fsub <8 x double> %2541, %2572
  %2574 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2573, <8 x double> %2567, <8 x double> %2564)
  %2575 = fadd <8 x double> %2541, %2552
  %2576 = getelementptr inbounds nuw i8, ptr %2204, i64 384
  %2577 = load <8 x double>, ptr %2576, align 64, !tbaa !26
  %2578 = getelementptr inbounds nuw i8, ptr %2204, i64 448
  %2579 = load <8 x double>, ptr %2578, align 64, !tbaa !26
  %2580 = getelementptr inbounds nuw i8, ptr %2204, i64 512
  %2581 = load <8 x double>, ptr %2580, align 64, !tbaa !26
  %2582 = getelementptr inbounds nuw i8, ptr %2204, i64 576
  %2583 = load <8 x double>, ptr %2582, align 64, !tbaa !26
  %2584 = getelementptr inbounds nuw i8, ptr %2204, i64 640
  %2585 = load <8 x double>, ptr %2584, align 64, !tbaa !26
  %2586 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2575, <8 x double> %2585, <8 x double> %2583)
  %2587 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2575, <8 x double> %2586, <8 x double> %2581)
  %2588 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2575, <8 x double> %2587, <8 x double> %2579)
  %2589 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2575, <8 x double> %2588, <8 x double> %2577)
  %2590 = fadd <8 x double> %2514, %2574
  %2591 = fmul <8 x double> %2590, splat (double 5.000000e-01)
  %2592 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2591, <8 x double> %2547, <8 x double> %2545)
  %2593 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2591, <8 x double> %2592, <8 x double> %2543)
  %2594 = fmul <8 x double> %2589, %2593
  %2595 = fmul <8 x double> %2510, %2594
  %2596 = fmul <8 x double> %2411, %2595
  %2597 = getelementptr inbounds nuw i8, ptr %2204, i64 2432
  %2598 = load <8 x double>, ptr %2597, align 64, !tbaa !26
  %2599 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2596, <8 x double> %2598, <8 x double> splat (double 1.000000e+00))
  %2600 = fdiv <8 x double> splat (double 1.000000e+00), %2599
  %2601 = select <8 x i1> %2427, <8 x double> %2600, <8 x double> splat (double 1.000000e+00)
  %2602 = getelementptr inbounds nuw i8, ptr %2204, i64 8192
  store <8 x double> %2601, ptr %2602, align 64, !tbaa !26
  %2603 = fmul <8 x double> %2595, %2601
  %2604 = getelementptr inbounds nuw i8, ptr %2204, i64 7424
  store <8 x double> %2603, ptr %2604, align 64, !tbaa !26
  %2605 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2514, <8 x double> %2547, <8 x double> %2545)
  %2606 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2514, <8 x double> %2605, <8 x double> %2543)
  %2607 = getelementptr inbounds nuw i8, ptr %2204, i64 6784
  store <8 x double> %2606, ptr %2607, align 64, !tbaa !26
  %2608 = fneg <8 x double> %2606
  %2609 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2608, <8 x double> %2514, <8 x double> %2552)
  %2610 = getelementptr inbounds nuw i8, ptr %2204, i64 6848
  store <8 x double> %2609, ptr %2610, align 64, !tbaa !26
  %2611 = fdiv <8 x double> splat (double 1.000000e+00), %2606
  %2612 = fneg <8 x double> %2567
  %2613 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2612, <8 x double> %2541, <8 x double> %2574)
  %2614 = getelementptr inbounds nuw i8, ptr %2204, i64 6912
  store <8 x double> %2613, ptr %2614, align 64, !tbaa !26
  %2615 = getelementptr inbounds nuw i8, ptr %2204, i64 6976
  store <8 x double> %2567, ptr %2615, align 64, !tbaa !26
  %2616 = fmul <8 x double> %2567, %2603
  %2617 = fmul <8 x double> %2459, splat (double 2.000000e+00)
  %2618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2603, <8 x double> %2611, <8 x double> %2617)
  %2619 = fneg <8 x double> %2603
  %2620 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2609, <8 x double> %2611, <8 x double> %2613)
  %2621 = fmul <8 x double> %2620, %2619
  %2622 = getelementptr inbounds nuw i8, ptr %2204, i64 7168
  store <8 x double> %2616, ptr %2622, align 64, !tbaa !26
  %2623 = getelementptr inbounds nuw i8, ptr %2204, i64 7232
  store <8 x double> %2618, ptr %2623, align 64, !tbaa !26
  %2624 = getelementptr inbounds nuw i8, ptr %2204, i64 7296
  store <8 x double> %2621, ptr %2624, align 64, !tbaa !26
  %2625 = fmul <8 x double> %2426, %2512
  %2626 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2625, <8 x double> %2398, <8 x double> splat (double 1.000000e+00))
  %2627 = fdiv <8 x double> %2512, %2626
  %2628 = load i64, ptr %116, align 8, !tbaa !22
  %2629 = sitofp i64 %2628 to double
  %2630 = fmul double %2629, 2.000000e+00
  %2631 = insertelement <8 x double> poison, double %2630, i64 0
  %2632 = shufflevector <8 x double> %2631, <8 x double> poison, <8 x i32> zeroinitializer
  %2633 = fmul <8 x double> %2519, %2632
  %2634 = fadd <8 x double> %2627, %2633
  %2635 = fdiv <8 x double> %2627, %2634
  %2636 = fmul <8 x double> %2471, %2633
  %2637 = select <8 x i1> %2427, <8 x double> %2627, <8 x double> %2636
  %2638 = getelementptr inbounds nuw i8, ptr %2204, i64 7488
  store <8 x double> %2637, ptr %2638, align 64, !tbaa !26
  %2639 = fmul <8 x double> %2633, %2635
  %2640 = select <8 x i1> %2427, <8 x double> %2627, <8 x double> %2639
  %2641 = getelementptr inbounds nuw i8, ptr %2204, i64 7552
  store <8 x double> %2640, ptr %2641, align 64, !tbaa !26
  %2642 = select <8 x i1> %2427, <8 x double> splat (double 1.000000e+00), <8 x double> %2635
  %2643 = getelementptr inbounds nuw i8, ptr %2204, i64 7616
  store <8 x double> %2642, ptr %2643, align 64, !tbaa !26
  %2644 = getelementptr inbounds nuw i8, ptr %2204, i64 9088
  store <8 x double> splat (double 1.000000e+09), ptr %2644, align 64, !tbaa !26
  %2645 = add nuw nsw i64 %2202, 1
  %2646 = load i64, ptr %153, align 8, !tbaa !20
  %2647 = icmp slt i64 %2645, %2646
  br i1 %2647, label %2201, label %1471, !llvm.loop !127

2648:                                             ; preds = %1476, %1471, %1462
  %2649 = phi i64 [ %2199, %1476 ], [ %2646, %1471 ], [ %1463, %1462 ]
  %2650 = load <8 x double>, ptr %172, align 64, !tbaa !26
  br label %2866

2651:                                             ; preds = %2860
  %2652 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %2653 = icmp sgt i64 %2864, 0
  br i1 %2653, label %2872, label %2866

2654:                                             ; preds = %1476, %2860
  %2655 = phi i64 [ %2863, %2860 ], [ 0, %1476 ]
  %2656 = load ptr, ptr %126, align 8, !tbaa !28
  %2657 = getelementptr inbounds nuw %struct.Piece, ptr %2656, i64 %2655
  %2658 = getelementptr inbounds nuw i8, ptr %2657, i64 9584
  %2659 = load ptr, ptr %2658, align 16, !tbaa !88
  %2660 = load i64, ptr %115, align 16, !tbaa !21
  %2661 = add nsw i64 %2660, -1
  %2662 = getelementptr inbounds <8 x double>, ptr %2659, i64 %2661
  %2663 = load <8 x double>, ptr %2662, align 64, !tbaa !26
  %2664 = getelementptr inbounds nuw i8, ptr %2657, i64 9592
  %2665 = load ptr, ptr %2664, align 8, !tbaa !89
  %2666 = getelementptr inbounds <8 x double>, ptr %2665, i64 %2661
  %2667 = load <8 x double>, ptr %2666, align 64, !tbaa !26
  %2668 = getelementptr inbounds nuw i8, ptr %2657, i64 7424
  %2669 = load <8 x double>, ptr %2668, align 64, !tbaa !26
  %2670 = getelementptr inbounds nuw i8, ptr %2657, i64 6912
  %2671 = load <8 x double>, ptr %2670, align 64, !tbaa !26
  %2672 = getelementptr inbounds nuw i8, ptr %2657, i64 6976
  %2673 = load <8 x double>, ptr %2672, align 64, !tbaa !26
  %2674 = getelementptr inbounds nuw i8, ptr %2657, i64 6848
  %2675 = load <8 x double>, ptr %2674, align 64, !tbaa !26
  %2676 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2667, <8 x double> %2675, <8 x double> %2663)
  %2677 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2673, <8 x double> %2676, <8 x double> %2671)
  %2678 = fmul <8 x double> %2669, %2677
  %2679 = getelementptr inbounds nuw i8, ptr %2657, i64 6784
  %2680 = load <8 x double>, ptr %2679, align 64, !tbaa !26
  %2681 = fneg <8 x double> %2667
  %2682 = fmul <8 x double> %2673, %2681
  %2683 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2682, <8 x double> %2680, <8 x double> splat (double 1.000000e+00))
  %2684 = fmul <8 x double> %2669, %2683
  %2685 = getelementptr inbounds nuw i8, ptr %2657, i64 7488
  %2686 = load <8 x double>, ptr %2685, align 64, !tbaa !26
  %2687 = getelementptr inbounds nuw i8, ptr %2657, i64 6336
  %2688 = load <8 x double>, ptr %2687, align 64, !tbaa !26
  %2689 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2686, <8 x double> %2688, <8 x double> %2678)
  %2690 = getelementptr inbounds nuw i8, ptr %2657, i64 8384
  %2691 = load <8 x double>, ptr %2690, align 64, !tbaa !26
  %2692 = fsub <8 x double> %2689, %2691
  %2693 = fadd <8 x double> %2686, %2684
  %2694 = getelementptr inbounds nuw i8, ptr %2657, i64 8320
  %2695 = load <8 x double>, ptr %2694, align 64, !tbaa !26
  %2696 = fadd <8 x double> %2693, %2695
  %2697 = getelementptr inbounds nuw i8, ptr %2657, i64 9280
  %2698 = load <8 x i64>, ptr %2697, align 64, !tbaa !26
  %2699 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2698)
  %2700 = icmp eq i64 %2699, 0
  %2701 = load i64, ptr %116, align 8, !tbaa !22
  br i1 %2700, label %2702, label %2717

2702:                                             ; preds = %2654
  %2703 = icmp slt i64 %2701, 0
  br i1 %2703, label %2708, label %2704

2704:                                             ; preds = %2702
  %2705 = getelementptr inbounds nuw i8, ptr %2657, i64 1792
  %2706 = getelementptr inbounds nuw i8, ptr %2657, i64 9688
  %2707 = load <8 x double>, ptr %2705, align 64, !tbaa !26
  br label %2710

2708:                                             ; preds = %2710, %2702
  %2709 = getelementptr inbounds nuw i8, ptr %2657, i64 6656
  store <8 x double> %2692, ptr %2709, align 64, !tbaa !26
  br label %2860

2710:                                             ; preds = %2704, %2710
  %2711 = phi i64 [ 0, %2704 ], [ %2714, %2710 ]
  %2712 = load ptr, ptr %2706, align 8, !tbaa !128
  %2713 = getelementptr inbounds nuw <8 x double>, ptr %2712, i64 %2711
  store <8 x double> %2707, ptr %2713, align 64, !tbaa !26
  %2714 = add nuw nsw i64 %2711, 1
  %2715 = load i64, ptr %116, align 8, !tbaa !22
  %2716 = icmp slt i64 %2711, %2715
  br i1 %2716, label %2710, label %2708, !llvm.loop !129

2717:                                             ; preds = %2654
  %2718 = getelementptr inbounds nuw i8, ptr %2657, i64 3328
  %2719 = load <8 x double>, ptr %2718, align 64, !tbaa !26
  %2720 = getelementptr inbounds nuw i8, ptr %2657, i64 8128
  %2721 = load <8 x double>, ptr %2720, align 64, !tbaa !26
  %2722 = getelementptr inbounds nuw i8, ptr %2657, i64 1664
  %2723 = load <8 x double>, ptr %2722, align 64, !tbaa !26
  %2724 = fmul <8 x double> %2721, %2723
  %2725 = load <8 x double>, ptr %2657, align 64, !tbaa !26
  %2726 = fsub <8 x double> %2725, %2719
  %2727 = sitofp i64 %2701 to double
  %2728 = insertelement <8 x double> poison, double %2727, i64 0
  %2729 = shufflevector <8 x double> %2728, <8 x double> poison, <8 x i32> zeroinitializer
  %2730 = fdiv <8 x double> %2726, %2729
  %2731 = getelementptr inbounds nuw i8, ptr %2657, i64 7552
  %2732 = load <8 x double>, ptr %2731, align 64, !tbaa !26
  %2733 = getelementptr inbounds nuw i8, ptr %2657, i64 7616
  %2734 = load <8 x double>, ptr %2733, align 64, !tbaa !26
  %2735 = getelementptr inbounds nuw i8, ptr %2657, i64 1792
  %2736 = load <8 x double>, ptr %2735, align 64, !tbaa !26
  %2737 = getelementptr inbounds nuw i8, ptr %2657, i64 9688
  %2738 = load ptr, ptr %2737, align 8, !tbaa !128
  %2739 = getelementptr inbounds <8 x double>, ptr %2738, i64 %2701
  store <8 x double> %2736, ptr %2739, align 64, !tbaa !26
  %2740 = icmp sgt i64 %2701, 0
  br i1 %2740, label %2741, label %2844

2741:                                             ; preds = %2717
  %2742 = fneg <8 x double> %2724
  %2743 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2742, <8 x double> %2734, <8 x double> %2732)
  %2744 = fsub <8 x double> splat (double 1.000000e+00), %2734
  %2745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2724, <8 x double> %2744, <8 x double> %2732)
  %2746 = getelementptr inbounds nuw i8, ptr %2657, i64 2944
  %2747 = getelementptr inbounds nuw i8, ptr %2657, i64 3008
  %2748 = getelementptr inbounds nuw i8, ptr %2657, i64 3072
  %2749 = getelementptr inbounds nuw i8, ptr %2657, i64 3136
  %2750 = getelementptr inbounds nuw i8, ptr %2657, i64 6016
  %2751 = getelementptr inbounds nuw i8, ptr %2657, i64 6080
  %2752 = getelementptr inbounds nuw i8, ptr %2657, i64 9696
  %2753 = getelementptr inbounds nuw i8, ptr %2657, i64 6144
  %2754 = getelementptr inbounds nuw i8, ptr %2657, i64 9704
  %2755 = getelementptr inbounds nuw i8, ptr %2657, i64 1152
  %2756 = fmul <8 x double> %2724, splat (double -5.000000e-01)
  %2757 = getelementptr inbounds nuw i8, ptr %2657, i64 7936
  %2758 = getelementptr inbounds nuw i8, ptr %2657, i64 2688
  %2759 = getelementptr inbounds nuw i8, ptr %2657, i64 2752
  %2760 = getelementptr inbounds nuw i8, ptr %2657, i64 2816
  %2761 = getelementptr inbounds nuw i8, ptr %2657, i64 2880
  %2762 = getelementptr inbounds nuw i8, ptr %2657, i64 9664
  %2763 = getelementptr inbounds nuw i8, ptr %2657, i64 9672
  %2764 = getelementptr inbounds nuw i8, ptr %2657, i64 9680
  br label %2765

2765:                                             ; preds = %2741, %2819
  %2766 = phi <8 x double> [ %2745, %2741 ], [ %2821, %2819 ]
  %2767 = phi <8 x double> [ %2743, %2741 ], [ %2822, %2819 ]
  %2768 = phi <8 x double> [ %2688, %2741 ], [ %2837, %2819 ]
  %2769 = phi <8 x double> [ zeroinitializer, %2741 ], [ %2840, %2819 ]
  %2770 = phi <8 x double> [ %2736, %2741 ], [ %2783, %2819 ]
  %2771 = phi i64 [ %2701, %2741 ], [ %2772, %2819 ]
  %2772 = add nsw i64 %2771, -1
  %2773 = uitofp nneg i64 %2772 to double
  %2774 = insertelement <8 x double> poison, double %2773, i64 0
  %2775 = shufflevector <8 x double> %2774, <8 x double> poison, <8 x i32> zeroinitializer
  %2776 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2775, <8 x double> %2730, <8 x double> %2719)
  %2777 = load <8 x double>, ptr %2746, align 64, !tbaa !26
  %2778 = load <8 x double>, ptr %2747, align 64, !tbaa !26
  %2779 = load <8 x double>, ptr %2748, align 64, !tbaa !26
  %2780 = load <8 x double>, ptr %2749, align 64, !tbaa !26
  %2781 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2776, <8 x double> %2780, <8 x double> %2779)
  %2782 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2776, <8 x double> %2781, <8 x double> %2778)
  %2783 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2776, <8 x double> %2782, <8 x double> %2777)
  %2784 = load <8 x double>, ptr %2750, align 64, !tbaa !26
  %2785 = load <8 x double>, ptr %2751, align 64, !tbaa !26
  %2786 = load ptr, ptr %2752, align 32, !tbaa !50
  %2787 = getelementptr inbounds nuw <8 x double>, ptr %2786, i64 %2772
  %2788 = load <8 x double>, ptr %2787, align 64, !tbaa !26
  %2789 = fmul <8 x double> %2785, %2788
  %2790 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2784, <8 x double> %2783, <8 x double> %2789)
  %2791 = load <8 x double>, ptr %2753, align 64, !tbaa !26
  %2792 = load ptr, ptr %2754, align 8, !tbaa !61
  %2793 = getelementptr inbounds nuw <8 x double>, ptr %2792, i64 %2772
  %2794 = load <8 x double>, ptr %2793, align 64, !tbaa !26
  %2795 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2791, <8 x double> %2794, <8 x double> %2790)
  %2796 = fmul <8 x double> %2795, splat (double 5.000000e-01)
  %2797 = icmp eq i64 %2771, 1
  br i1 %2797, label %2813, label %2798

2798:                                             ; preds = %2765
  %2799 = load <8 x double>, ptr %2755, align 64, !tbaa !26
  %2800 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2796, <8 x double> %2799, <8 x double> %2756)
  %2801 = load <8 x double>, ptr %2757, align 64, !tbaa !26
  %2802 = fmul <8 x double> %2729, %2801
  %2803 = load <8 x double>, ptr %2758, align 64, !tbaa !26
  %2804 = load <8 x double>, ptr %2759, align 64, !tbaa !26
  %2805 = load <8 x double>, ptr %2760, align 64, !tbaa !26
  %2806 = load <8 x double>, ptr %2761, align 64, !tbaa !26
  %2807 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2776, <8 x double> %2806, <8 x double> %2805)
  %2808 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2776, <8 x double> %2807, <8 x double> %2804)
  %2809 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2776, <8 x double> %2808, <8 x double> %2803)
  %2810 = fmul <8 x double> %2802, %2809
  %2811 = fsub <8 x double> %2810, %2800
  %2812 = fadd <8 x double> %2800, %2810
  br label %2819

2813:                                             ; preds = %2765
  %2814 = load <8 x double>, ptr %2685, align 64, !tbaa !26
  %2815 = load <8 x double>, ptr %2755, align 64, !tbaa !26
  %2816 = fmul <8 x double> %2796, splat (double -2.000000e+00)
  %2817 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2816, <8 x double> %2815, <8 x double> %2814)
  %2818 = fadd <8 x double> %2724, %2817
  br label %2819

2819:                                             ; preds = %2813, %2798
  %2820 = phi <8 x double> [ %2799, %2798 ], [ %2815, %2813 ]
  %2821 = phi <8 x double> [ %2811, %2798 ], [ %2818, %2813 ]
  %2822 = phi <8 x double> [ %2812, %2798 ], [ %2814, %2813 ]
  %2823 = fsub <8 x double> %2770, %2783
  %2824 = fmul <8 x double> %2784, %2823
  %2825 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2824, <8 x double> %2820, <8 x double> %2766)
  %2826 = fadd <8 x double> %2822, %2825
  %2827 = fneg <8 x double> %2767
  %2828 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2827, <8 x double> %2769, <8 x double> %2826)
  %2829 = fdiv <8 x double> splat (double 1.000000e+00), %2828
  %2830 = load ptr, ptr %2737, align 8, !tbaa !128
  %2831 = getelementptr inbounds nuw <8 x double>, ptr %2830, i64 %2772
  store <8 x double> %2783, ptr %2831, align 64, !tbaa !26
  %2832 = load ptr, ptr %2762, align 64, !tbaa !63
  %2833 = getelementptr inbounds nuw <8 x double>, ptr %2832, i64 %2772
  %2834 = load <8 x double>, ptr %2833, align 64, !tbaa !26
  %2835 = fneg <8 x double> %2834
  %2836 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2767, <8 x double> %2768, <8 x double> %2835)
  %2837 = fmul <8 x double> %2829, %2836
  %2838 = load ptr, ptr %2763, align 8, !tbaa !130
  %2839 = getelementptr inbounds nuw <8 x double>, ptr %2838, i64 %2772
  store <8 x double> %2837, ptr %2839, align 64, !tbaa !26
  %2840 = fmul <8 x double> %2821, %2829
  %2841 = load ptr, ptr %2764, align 16, !tbaa !131
  %2842 = getelementptr inbounds nuw <8 x double>, ptr %2841, i64 %2772
  store <8 x double> %2840, ptr %2842, align 64, !tbaa !26
  %2843 = icmp samesign ugt i64 %2771, 1
  br i1 %2843, label %2765, label %2844, !llvm.loop !132

2844:                                             ; preds = %2819, %2717
  %2845 = load <8 x i64>, ptr %2697, align 64, !tbaa !26
  %2846 = load <8 x double>, ptr %2685, align 64, !tbaa !26
  %2847 = getelementptr inbounds nuw i8, ptr %2657, i64 9672
  %2848 = load ptr, ptr %2847, align 8, !tbaa !130
  %2849 = load <8 x double>, ptr %2848, align 64, !tbaa !26
  %2850 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2846, <8 x double> %2849, <8 x double> %2678)
  %2851 = icmp eq <8 x i64> %2845, zeroinitializer
  %2852 = select <8 x i1> %2851, <8 x double> %2692, <8 x double> %2850
  %2853 = getelementptr inbounds nuw i8, ptr %2657, i64 6656
  store <8 x double> %2852, ptr %2853, align 64, !tbaa !26
  %2854 = getelementptr inbounds nuw i8, ptr %2657, i64 9680
  %2855 = load ptr, ptr %2854, align 16, !tbaa !131
  %2856 = load <8 x double>, ptr %2855, align 64, !tbaa !26
  %2857 = fsub <8 x double> splat (double 1.000000e+00), %2856
  %2858 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2846, <8 x double> %2857, <8 x double> %2684)
  %2859 = select <8 x i1> %2851, <8 x double> %2696, <8 x double> %2858
  br label %2860

2860:                                             ; preds = %2708, %2844
  %2861 = phi <8 x double> [ %2696, %2708 ], [ %2859, %2844 ]
  %2862 = getelementptr inbounds nuw i8, ptr %2657, i64 6720
  store <8 x double> %2861, ptr %2862, align 64, !tbaa !26
  %2863 = add nuw nsw i64 %2655, 1
  %2864 = load i64, ptr %153, align 8, !tbaa !20
  %2865 = icmp slt i64 %2863, %2864
  br i1 %2865, label %2654, label %2651, !llvm.loop !133

2866:                                             ; preds = %2981, %2648, %2651
  %2867 = phi <8 x double> [ %2652, %2651 ], [ %2650, %2648 ], [ %2652, %2981 ]
  %2868 = phi i64 [ %2864, %2651 ], [ %2649, %2648 ], [ %2982, %2981 ]
  %2869 = fcmp ogt <8 x double> %2867, zeroinitializer
  %2870 = bitcast <8 x i1> %2869 to i8
  %2871 = icmp eq i8 %2870, 0
  br i1 %2871, label %3068, label %2985

2872:                                             ; preds = %2651, %2981
  %2873 = phi i64 [ %2982, %2981 ], [ %2864, %2651 ]
  %2874 = phi i64 [ %2983, %2981 ], [ 0, %2651 ]
  %2875 = load ptr, ptr %126, align 8, !tbaa !28
  %2876 = getelementptr inbounds nuw %struct.Piece, ptr %2875, i64 %2874
  %2877 = getelementptr inbounds nuw i8, ptr %2876, i64 9408
  %2878 = load <8 x i64>, ptr %2877, align 64, !tbaa !26
  %2879 = getelementptr inbounds nuw i8, ptr %2876, i64 2624
  %2880 = load <8 x double>, ptr %2879, align 64, !tbaa !26
  %2881 = fcmp ogt <8 x double> %2880, zeroinitializer
  %2882 = select <8 x i1> %2881, <8 x i64> %2878, <8 x i64> zeroinitializer
  %2883 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2882)
  %2884 = icmp eq i64 %2883, 0
  br i1 %2884, label %2981, label %2885

2885:                                             ; preds = %2872
  %2886 = load <8 x double>, ptr %2876, align 64, !tbaa !26
  %2887 = getelementptr inbounds nuw i8, ptr %2876, i64 3328
  %2888 = load <8 x double>, ptr %2887, align 64, !tbaa !26
  %2889 = fsub <8 x double> %2886, %2888
  %2890 = getelementptr inbounds nuw i8, ptr %2876, i64 8256
  %2891 = load <8 x double>, ptr %2890, align 64, !tbaa !26
  %2892 = fsub <8 x double> splat (double 1.000000e+00), %2891
  %2893 = getelementptr inbounds nuw i8, ptr %2876, i64 2304
  %2894 = load <8 x double>, ptr %2893, align 64, !tbaa !26
  %2895 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2892, <8 x double> %2894, <8 x double> %2889)
  %2896 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %2897 = fdiv <8 x double> splat (double 1.000000e+00), %2896
  %2898 = fcmp ogt <8 x double> %2880, splat (double 1.000000e-30)
  %2899 = select <8 x i1> %2898, <8 x double> %2880, <8 x double> splat (double 1.000000e-30)
  %2900 = fdiv <8 x double> %2895, %2899
  %2901 = fadd <8 x double> %2897, %2900
  %2902 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %2903 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2902, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2904 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2902, <8 x double> %2903, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2905 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2906 = getelementptr inbounds nuw i8, ptr %2876, i64 6656
  %2907 = load <8 x double>, ptr %2906, align 64, !tbaa !26
  %2908 = getelementptr inbounds nuw i8, ptr %2876, i64 6720
  %2909 = load <8 x double>, ptr %2908, align 64, !tbaa !26
  %2910 = fdiv <8 x double> %2907, %2909
  %2911 = fcmp olt <8 x double> %2910, %2902
  %2912 = select <8 x i1> %2911, <8 x double> %2910, <8 x double> %2902
  %2913 = getelementptr inbounds nuw i8, ptr %2876, i64 3968
  %2914 = load <8 x double>, ptr %2913, align 64, !tbaa !26
  %2915 = fcmp olt <8 x double> %2914, %2912
  %2916 = select <8 x i1> %2915, <8 x double> %2914, <8 x double> %2912
  %2917 = fneg <8 x double> %2909
  br label %2921

2918:                                             ; preds = %2921
  %2919 = getelementptr inbounds nuw i8, ptr %2876, i64 7360
  store <8 x double> %2972, ptr %2919, align 64, !tbaa !26
  %2920 = load i64, ptr %153, align 8, !tbaa !20
  br label %2981

2921:                                             ; preds = %2885, %2921
  %2922 = phi <8 x i64> [ %2882, %2885 ], [ %2975, %2921 ]
  %2923 = phi i32 [ 0, %2885 ], [ %2976, %2921 ]
  %2924 = phi <8 x double> [ %2916, %2885 ], [ %2972, %2921 ]
  %2925 = fadd <8 x double> %2924, splat (double 2.731500e+02)
  %2926 = fcmp ogt <8 x double> %2924, zeroinitializer
  %2927 = select <8 x i1> %2926, <8 x double> %2924, <8 x double> zeroinitializer
  %2928 = fadd <8 x double> %2927, splat (double 2.731500e+02)
  %2929 = fadd <8 x double> %2928, splat (double 0xC08451671D164BD4)
  %2930 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2929
  %2931 = fsub <8 x double> %2928, %2930
  %2932 = fadd <8 x double> %2931, splat (double 0x40923C3565924845)
  %2933 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2931, <8 x double> %2932, <8 x double> splat (double 0xC12619EA558539E6))
  %2934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2931, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2931, <8 x double> %2934, <8 x double> splat (double 0xC148A99584203885))
  %2936 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2931, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2931, <8 x double> %2936, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2938 = fmul <8 x double> %2937, splat (double 2.000000e+00)
  %2939 = fmul <8 x double> %2933, splat (double 4.000000e+00)
  %2940 = fneg <8 x double> %2937
  %2941 = fmul <8 x double> %2939, %2940
  %2942 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2935, <8 x double> %2935, <8 x double> %2941)
  %2943 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2942)
  %2944 = fsub <8 x double> %2943, %2935
  %2945 = fdiv <8 x double> %2938, %2944
  %2946 = fmul <8 x double> %2945, %2945
  %2947 = fmul <8 x double> %2946, splat (double 1.000000e+06)
  %2948 = fmul <8 x double> %2946, %2947
  %2949 = fmul <8 x double> %2925, splat (double 4.615260e+02)
  %2950 = fdiv <8 x double> %2948, %2949
  %2951 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2917, <8 x double> %2924, <8 x double> %2907)
  %2952 = fsub <8 x double> %2950, %2905
  %2953 = fcmp ogt <8 x double> %2952, zeroinitializer
  %2954 = select <8 x i1> %2953, <8 x double> %2952, <8 x double> zeroinitializer
  %2955 = fmul <8 x double> %2904, %2954
  %2956 = fdiv <8 x double> %2955, %2901
  %2957 = fsub <8 x double> %2951, %2956
  %2958 = fmul <8 x double> %2904, %2950
  %2959 = fdiv <8 x double> %2904, %2949
  %2960 = fadd <8 x double> %2959, splat (double -1.000000e+00)
  %2961 = fmul <8 x double> %2960, %2958
  %2962 = fdiv <8 x double> %2961, %2925
  %2963 = fdiv <8 x double> %2962, %2901
  %2964 = fcmp ule <8 x double> %2950, %2905
  %2965 = select <8 x i1> %2964, <8 x double> zeroinitializer, <8 x double> %2963
  %2966 = fsub <8 x double> %2917, %2965
  %2967 = fdiv <8 x double> %2957, %2966
  %2968 = fsub <8 x double> %2924, %2967
  %2969 = fcmp olt <8 x double> %2968, %2912
  %2970 = select <8 x i1> %2969, <8 x double> %2968, <8 x double> %2912
  %2971 = icmp eq <8 x i64> %2922, zeroinitializer
  %2972 = select <8 x i1> %2971, <8 x double> %2924, <8 x double> %2970
  %2973 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2967)
  %2974 = fcmp oge <8 x double> %2973, splat (double 1.000000e-05)
  %2975 = select <8 x i1> %2974, <8 x i64> %2922, <8 x i64> zeroinitializer
  %2976 = add nuw nsw i32 %2923, 1
  %2977 = icmp samesign ult i32 %2923, 7
  %2978 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2975)
  %2979 = icmp ne i64 %2978, 0
  %2980 = select i1 %2977, i1 %2979, i1 false
  br i1 %2980, label %2921, label %2918, !llvm.loop !134

2981:                                             ; preds = %2872, %2918
  %2982 = phi i64 [ %2873, %2872 ], [ %2920, %2918 ]
  %2983 = add nuw nsw i64 %2874, 1
  %2984 = icmp slt i64 %2983, %2982
  br i1 %2984, label %2872, label %2866, !llvm.loop !135

2985:                                             ; preds = %2866
  %2986 = sext <8 x i1> %2869 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2986, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #6
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #6
  %2987 = load <8 x double>, ptr %133, align 64, !tbaa !26
  %2988 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %2989 = fadd <8 x double> %2987, %2988
  store <8 x double> %2989, ptr %6, align 64, !tbaa !26
  %2990 = load ptr, ptr %166, align 8
  %2991 = load ptr, ptr %168, align 8
  %2992 = load ptr, ptr %169, align 8
  br label %2993

2993:                                             ; preds = %3063, %2985
  %2994 = phi i64 [ 0, %2985 ], [ %3064, %3063 ]
  %2995 = getelementptr inbounds nuw i64, ptr %4, i64 %2994
  %2996 = load i64, ptr %2995, align 8, !tbaa !30
  %2997 = icmp eq i64 %2996, 0
  br i1 %2997, label %3063, label %2998

2998:                                             ; preds = %2993
  %2999 = getelementptr inbounds nuw [8 x i64], ptr %117, i64 0, i64 %2994
  %3000 = load i64, ptr %2999, align 8, !tbaa !30
  %3001 = shl nsw i64 %3000, 1
  %3002 = or disjoint i64 %3001, 1
  %3003 = getelementptr inbounds i64, ptr %2990, i64 %3002
  %3004 = load i64, ptr %3003, align 8, !tbaa !30
  %3005 = shl nuw nsw i64 %2994, 1
  %3006 = or disjoint i64 %3005, 1
  %3007 = getelementptr inbounds nuw [16 x i64], ptr %167, i64 0, i64 %3006
  %3008 = getelementptr inbounds i64, ptr %2992, i64 %3002
  %3009 = load i64, ptr %3008, align 8, !tbaa !30
  %3010 = shl nsw i64 %3009, 4
  %3011 = getelementptr inbounds i8, ptr %2991, i64 %3010
  %3012 = getelementptr inbounds nuw double, ptr %6, i64 %2994
  %3013 = load double, ptr %3012, align 8, !tbaa !42
  %3014 = load i64, ptr %3007, align 8, !tbaa !30
  %3015 = getelementptr i8, ptr %3011, i64 -16
  %3016 = icmp sgt i64 %3014, 0
  br i1 %3016, label %3017, label %3026

3017:                                             ; preds = %2998, %3023
  %3018 = phi i64 [ %3024, %3023 ], [ %3014, %2998 ]
  %3019 = shl i64 %3018, 4
  %3020 = getelementptr i8, ptr %3015, i64 %3019
  %3021 = load double, ptr %3020, align 8, !tbaa !42
  %3022 = fcmp ugt double %3013, %3021
  br i1 %3022, label %3026, label %3023

3023:                                             ; preds = %3017
  %3024 = add nsw i64 %3018, -1
  store i64 %3024, ptr %3007, align 8, !tbaa !30
  %3025 = icmp sgt i64 %3018, 1
  br i1 %3025, label %3017, label %3026, !llvm.loop !80

3026:                                             ; preds = %3023, %3017, %2998
  %3027 = phi i64 [ %3014, %2998 ], [ 0, %3023 ], [ %3018, %3017 ]
  %3028 = icmp slt i64 %3027, %3004
  br i1 %3028, label %3029, label %3038

3029:                                             ; preds = %3026, %3035
  %3030 = phi i64 [ %3036, %3035 ], [ %3027, %3026 ]
  %3031 = shl nsw i64 %3030, 4
  %3032 = getelementptr inbounds i8, ptr %3011, i64 %3031
  %3033 = load double, ptr %3032, align 8, !tbaa !42
  %3034 = fcmp ule double %3013, %3033
  br i1 %3034, label %3043, label %3035

3035:                                             ; preds = %3029
  %3036 = add i64 %3030, 1
  store i64 %3036, ptr %3007, align 8, !tbaa !30
  %3037 = icmp eq i64 %3036, %3004
  br i1 %3037, label %3038, label %3029, !llvm.loop !81

3038:                                             ; preds = %3035, %3026
  %3039 = shl i64 %3004, 4
  %3040 = getelementptr i8, ptr %3011, i64 %3039
  %3041 = getelementptr i8, ptr %3040, i64 -8
  %3042 = load double, ptr %3041, align 8, !tbaa !42
  br label %3060

3043:                                             ; preds = %3029
  %3044 = shl nsw i64 %3030, 1
  %3045 = or disjoint i64 %3044, 1
  %3046 = getelementptr inbounds double, ptr %3011, i64 %3045
  %3047 = load double, ptr %3046, align 8, !tbaa !42
  %3048 = icmp sgt i64 %3030, 0
  br i1 %3048, label %3049, label %3060

3049:                                             ; preds = %3043
  %3050 = getelementptr inbounds nuw i8, ptr %3011, i64 %3031
  %3051 = getelementptr i8, ptr %3050, i64 -8
  %3052 = load double, ptr %3051, align 8, !tbaa !42
  %3053 = getelementptr i8, ptr %3050, i64 -16
  %3054 = load double, ptr %3053, align 8, !tbaa !42
  %3055 = fsub double %3013, %3054
  %3056 = fsub double %3033, %3054
  %3057 = fdiv double %3055, %3056
  %3058 = fsub double %3047, %3052
  %3059 = tail call double @llvm.fmuladd.f64(double %3057, double %3058, double %3052)
  br label %3060

3060:                                             ; preds = %3049, %3043, %3038
  %3061 = phi double [ %3059, %3049 ], [ %3047, %3043 ], [ %3042, %3038 ]
  %3062 = getelementptr inbounds nuw double, ptr %5, i64 %2994
  store double %3061, ptr %3062, align 8, !tbaa !42
  br label %3063

3063:                                             ; preds = %3060, %2993
  %3064 = add nuw nsw i64 %2994, 1
  %3065 = icmp eq i64 %3064, 8
  br i1 %3065, label %3066, label %2993, !llvm.loop !82

3066:                                             ; preds = %3063
  %3067 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #6
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %3068

3068:                                             ; preds = %2866, %3066
  %3069 = phi <8 x double> [ %3067, %3066 ], [ zeroinitializer, %2866 ]
  %3070 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %3071 = fcmp ogt <8 x double> %3070, zeroinitializer
  %3072 = sext <8 x i1> %3071 to <8 x i64>
  %3073 = xor <8 x i64> %3072, splat (i64 -1)
  %3074 = load <8 x double>, ptr %135, align 64, !tbaa !26
  %3075 = fcmp oeq <8 x double> %3074, splat (double 1.000000e+00)
  %3076 = fcmp oeq <8 x double> %3074, splat (double 2.000000e+00)
  %3077 = or <8 x i1> %3075, %3076
  %3078 = select <8 x i1> %3077, <8 x i64> %3073, <8 x i64> zeroinitializer
  %3079 = xor <8 x i64> %3078, %3072
  %3080 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %3081 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %3082 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %3083 = icmp eq <8 x i64> %3079, splat (i64 -1)
  %3084 = select <8 x i1> %3083, <8 x double> %3082, <8 x double> %3081
  %3085 = bitcast <8 x i1> %3071 to i8
  %3086 = icmp eq i8 %3085, 0
  br i1 %3086, label %3118, label %3087

3087:                                             ; preds = %3068
  %3088 = select <8 x i1> %3071, <8 x double> %3069, <8 x double> %3084
  %3089 = fmul <8 x double> %3088, splat (double 0x3EB0C6F7A0B5ED8D)
  %3090 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3089)
  %3091 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3090)
  %3092 = fmul <8 x double> %3091, %3091
  %3093 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3091, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3092)
  %3094 = fadd <8 x double> %3093, splat (double 0x402DD4891DBECC6B)
  %3095 = fmul <8 x double> %3091, splat (double 0x40C77A698FD9BCCA)
  %3096 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3092, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3095)
  %3097 = fadd <8 x double> %3096, splat (double 0xC0B2D7440748F0B3)
  %3098 = fmul <8 x double> %3091, splat (double 0xC148A99584203885)
  %3099 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3092, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3098)
  %3100 = fadd <8 x double> %3099, splat (double 0x4118B9E59F2691E5)
  %3101 = fmul <8 x double> %3100, splat (double 2.000000e+00)
  %3102 = fneg <8 x double> %3097
  %3103 = fmul <8 x double> %3094, splat (double 4.000000e+00)
  %3104 = fneg <8 x double> %3100
  %3105 = fmul <8 x double> %3103, %3104
  %3106 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3097, <8 x double> %3097, <8 x double> %3105)
  %3107 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3106)
  %3108 = fsub <8 x double> %3102, %3107
  %3109 = fdiv <8 x double> %3101, %3108
  %3110 = fadd <8 x double> %3109, splat (double 0x408451671D164BD4)
  %3111 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3109, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3112 = fmul <8 x double> %3111, splat (double -4.000000e+00)
  %3113 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3110, <8 x double> %3110, <8 x double> %3112)
  %3114 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3113)
  %3115 = fsub <8 x double> %3110, %3114
  %3116 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3115, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3117 = select <8 x i1> %3071, <8 x double> %3116, <8 x double> %3080
  br label %3118

3118:                                             ; preds = %3087, %3068
  %3119 = phi <8 x double> [ %3088, %3087 ], [ %3084, %3068 ]
  %3120 = phi <8 x double> [ %3117, %3087 ], [ %3080, %3068 ]
  %3121 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3122 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %3123 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3124 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %3125 = fmul <8 x double> %3123, %3124
  %3126 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3121, <8 x double> %3122, <8 x double> %3125)
  %3127 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %3128 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %3129 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3130 = fneg <8 x double> %3126
  %3131 = fmul <8 x double> %3129, %3130
  %3132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3127, <8 x double> %3128, <8 x double> %3131)
  %3133 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %3134 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3129, <8 x double> %3133, <8 x double> %3127)
  %3135 = fdiv <8 x double> %3132, %3134
  %3136 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3137 = select <8 x i1> %3083, <8 x double> %3136, <8 x double> %3081
  store <8 x double> %3137, ptr %183, align 64, !tbaa !26
  %3138 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3139 = select <8 x i1> %3083, <8 x double> %3138, <8 x double> %3135
  store <8 x double> %3139, ptr %184, align 64, !tbaa !26
  store <8 x double> %3119, ptr %177, align 64, !tbaa !26
  %3140 = load <8 x i64>, ptr %106, align 64, !tbaa !26
  %3141 = and <8 x i64> %3140, %3078
  %3142 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3141)
  %3143 = icmp eq i64 %3142, 0
  br i1 %3143, label %3810, label %3144

3144:                                             ; preds = %3118
  %3145 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3146 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3147 = fmul <8 x double> %3123, %3146
  %3148 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3121, <8 x double> %3145, <8 x double> %3147)
  %3149 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3150 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %3151 = fdiv <8 x double> %3149, %3150
  %3152 = fmul <8 x double> %3081, splat (double 3.000000e-01)
  %3153 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %3154 = fadd <8 x double> %3081, %3153
  %3155 = fadd <8 x double> %3154, splat (double 2.000000e+05)
  %3156 = fmul <8 x double> %3150, splat (double 2.870530e+02)
  %3157 = fdiv <8 x double> %3081, %3156
  %3158 = fcmp ogt <8 x double> %3119, %3152
  %3159 = select <8 x i1> %3158, <8 x double> %3119, <8 x double> %3152
  %3160 = fcmp olt <8 x double> %3159, %3155
  %3161 = select <8 x i1> %3160, <8 x double> %3159, <8 x double> %3155
  %3162 = icmp eq <8 x i64> %3078, zeroinitializer
  %3163 = select <8 x i1> %3162, <8 x double> %3119, <8 x double> %3161
  %3164 = fdiv <8 x double> %3137, splat (double 2.870530e+02)
  %3165 = fmul <8 x double> %3157, splat (double 2.000000e+00)
  %3166 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3165)
  br label %3167

3167:                                             ; preds = %3718, %3144
  %3168 = phi <8 x double> [ %3133, %3144 ], [ %3725, %3718 ]
  %3169 = phi <8 x double> [ %3120, %3144 ], [ %3203, %3718 ]
  %3170 = phi <8 x double> [ %3152, %3144 ], [ %3748, %3718 ]
  %3171 = phi <8 x double> [ %3155, %3144 ], [ %3745, %3718 ]
  %3172 = phi <8 x i64> [ %3141, %3144 ], [ %3764, %3718 ]
  %3173 = phi i32 [ 0, %3144 ], [ %3769, %3718 ]
  %3174 = phi <8 x double> [ %3163, %3144 ], [ %3766, %3718 ]
  %3175 = fmul <8 x double> %3174, splat (double 0x3EB0C6F7A0B5ED8D)
  %3176 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3175)
  %3177 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3176)
  %3178 = fmul <8 x double> %3177, %3177
  %3179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3177, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3178)
  %3180 = fadd <8 x double> %3179, splat (double 0x402DD4891DBECC6B)
  %3181 = fmul <8 x double> %3177, splat (double 0x40C77A698FD9BCCA)
  %3182 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3178, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3181)
  %3183 = fadd <8 x double> %3182, splat (double 0xC0B2D7440748F0B3)
  %3184 = fmul <8 x double> %3177, splat (double 0xC148A99584203885)
  %3185 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3178, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3184)
  %3186 = fadd <8 x double> %3185, splat (double 0x4118B9E59F2691E5)
  %3187 = fmul <8 x double> %3186, splat (double 2.000000e+00)
  %3188 = fneg <8 x double> %3183
  %3189 = fmul <8 x double> %3180, splat (double 4.000000e+00)
  %3190 = fneg <8 x double> %3186
  %3191 = fmul <8 x double> %3189, %3190
  %3192 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3183, <8 x double> %3183, <8 x double> %3191)
  %3193 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3192)
  %3194 = fsub <8 x double> %3188, %3193
  %3195 = fdiv <8 x double> %3187, %3194
  %3196 = fadd <8 x double> %3195, splat (double 0x408451671D164BD4)
  %3197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3195, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3198 = fmul <8 x double> %3197, splat (double -4.000000e+00)
  %3199 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3196, <8 x double> %3196, <8 x double> %3198)
  %3200 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3199)
  %3201 = fsub <8 x double> %3196, %3200
  %3202 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3201, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3203 = select <8 x i1> %3162, <8 x double> %3169, <8 x double> %3202
  %3204 = fsub <8 x double> %3174, %3137
  %3205 = fcmp ogt <8 x double> %3204, zeroinitializer
  %3206 = select <8 x i1> %3205, <8 x double> %3204, <8 x double> zeroinitializer
  %3207 = fadd <8 x double> %3203, splat (double 2.731500e+02)
  %3208 = load <8 x double>, ptr %160, align 64, !tbaa !26, !noalias !136
  %3209 = load <8 x double>, ptr %178, align 64, !tbaa !26, !noalias !136
  %3210 = load <8 x double>, ptr %161, align 64, !tbaa !26, !noalias !136
  %3211 = load <8 x double>, ptr %179, align 64, !tbaa !26, !noalias !136
  %3212 = fmul <8 x double> %3210, %3211
  %3213 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3208, <8 x double> %3209, <8 x double> %3212)
  %3214 = load <8 x double>, ptr %182, align 64, !tbaa !26, !noalias !136
  %3215 = load <8 x double>, ptr %180, align 64, !tbaa !26, !noalias !136
  %3216 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3214, <8 x double> %3168, <8 x double> %3215)
  %3217 = load <8 x double>, ptr %181, align 64, !tbaa !26, !noalias !136
  %3218 = fneg <8 x double> %3213
  %3219 = fmul <8 x double> %3214, %3218
  %3220 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3215, <8 x double> %3217, <8 x double> %3219)
  %3221 = fdiv <8 x double> %3220, %3216
  %3222 = fcmp ogt <8 x double> %3206, splat (double 2.000000e+03)
  %3223 = select <8 x i1> %3222, <8 x double> %3206, <8 x double> splat (double 2.000000e+03)
  %3224 = fmul <8 x double> %3223, splat (double 0x3EB0C6F7A0B5ED8D)
  %3225 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3224)
  %3226 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3225)
  %3227 = fmul <8 x double> %3226, %3226
  %3228 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3226, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3227)
  %3229 = fadd <8 x double> %3228, splat (double 0x402DD4891DBECC6B)
  %3230 = fmul <8 x double> %3226, splat (double 0x40C77A698FD9BCCA)
  %3231 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3227, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3230)
  %3232 = fadd <8 x double> %3231, splat (double 0xC0B2D7440748F0B3)
  %3233 = fmul <8 x double> %3226, splat (double 0xC148A99584203885)
  %3234 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3227, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3233)
  %3235 = fadd <8 x double> %3234, splat (double 0x4118B9E59F2691E5)
  %3236 = fmul <8 x double> %3235, splat (double 2.000000e+00)
  %3237 = fneg <8 x double> %3232
  %3238 = fmul <8 x double> %3229, splat (double 4.000000e+00)
  %3239 = fneg <8 x double> %3235
  %3240 = fmul <8 x double> %3238, %3239
  %3241 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3232, <8 x double> %3232, <8 x double> %3240)
  %3242 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3241)
  %3243 = fsub <8 x double> %3237, %3242
  %3244 = fdiv <8 x double> %3236, %3243
  %3245 = fadd <8 x double> %3244, splat (double 0x408451671D164BD4)
  %3246 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3244, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3247 = fmul <8 x double> %3246, splat (double -4.000000e+00)
  %3248 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3245, <8 x double> %3245, <8 x double> %3247)
  %3249 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3248)
  %3250 = fsub <8 x double> %3245, %3249
  %3251 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3250, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3252 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3251, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3253 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3251, <8 x double> %3252, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3254 = fadd <8 x double> %3251, splat (double 2.731500e+02)
  %3255 = fcmp ule <8 x double> %3251, %3221
  %3256 = load <8 x double>, ptr %190, align 64, !tbaa !26, !noalias !136
  %3257 = fmul <8 x double> %3216, %3256
  %3258 = fadd <8 x double> %3216, %3256
  %3259 = fdiv <8 x double> %3257, %3258
  %3260 = fdiv <8 x double> %3259, %3253
  %3261 = fmul <8 x double> %3254, splat (double 4.615260e+02)
  %3262 = fmul <8 x double> %3223, %3253
  %3263 = fmul <8 x double> %3251, %3256
  %3264 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3221, <8 x double> %3216, <8 x double> %3263)
  %3265 = fdiv <8 x double> %3264, %3258
  %3266 = select <8 x i1> %3255, <8 x double> %3221, <8 x double> %3265
  store <8 x double> %3266, ptr %184, align 64, !tbaa !26, !noalias !136
  %3267 = fsub <8 x double> %3251, %3221
  %3268 = fmul <8 x double> %3267, %3260
  %3269 = select <8 x i1> %3255, <8 x double> zeroinitializer, <8 x double> %3268
  %3270 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3203, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3271 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3203, <8 x double> %3270, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3272 = fdiv <8 x double> splat (double 1.000000e+00), %3271
  %3273 = load i64, ptr %153, align 8, !tbaa !20, !noalias !139
  %3274 = icmp sgt i64 %3273, 0
  br i1 %3274, label %3334, label %3275

3275:                                             ; preds = %3655, %3167
  %3276 = phi i64 [ %3273, %3167 ], [ %3667, %3655 ]
  %3277 = phi <8 x double> [ zeroinitializer, %3167 ], [ %3664, %3655 ]
  %3278 = phi <8 x double> [ zeroinitializer, %3167 ], [ %3665, %3655 ]
  %3279 = extractelement <8 x double> %3277, i64 0
  %3280 = extractelement <8 x double> %3277, i64 1
  %3281 = fadd double %3279, %3280
  %3282 = extractelement <8 x double> %3277, i64 2
  %3283 = fadd double %3281, %3282
  %3284 = extractelement <8 x double> %3277, i64 3
  %3285 = fadd double %3283, %3284
  %3286 = extractelement <8 x double> %3277, i64 4
  %3287 = fadd double %3285, %3286
  %3288 = extractelement <8 x double> %3277, i64 5
  %3289 = fadd double %3287, %3288
  %3290 = extractelement <8 x double> %3277, i64 6
  %3291 = fadd double %3289, %3290
  %3292 = extractelement <8 x double> %3277, i64 7
  %3293 = fadd double %3291, %3292
  %3294 = insertelement <8 x double> poison, double %3293, i64 0
  %3295 = extractelement <8 x double> %3278, i64 0
  %3296 = extractelement <8 x double> %3278, i64 1
  %3297 = fadd double %3295, %3296
  %3298 = extractelement <8 x double> %3278, i64 2
  %3299 = fadd double %3297, %3298
  %3300 = extractelement <8 x double> %3278, i64 3
  %3301 = fadd double %3299, %3300
  %3302 = extractelement <8 x double> %3278, i64 4
  %3303 = fadd double %3301, %3302
  %3304 = extractelement <8 x double> %3278, i64 5
  %3305 = fadd double %3303, %3304
  %3306 = extractelement <8 x double> %3278, i64 6
  %3307 = fadd double %3305, %3306
  %3308 = extractelement <8 x double> %3278, i64 7
  %3309 = fadd double %3307, %3308
  %3310 = shufflevector <8 x double> %3294, <8 x double> poison, <8 x i32> zeroinitializer
  %3311 = insertelement <8 x double> poison, double %3309, i64 0
  %3312 = shufflevector <8 x double> %3311, <8 x double> poison, <8 x i32> zeroinitializer
  %3313 = fdiv <8 x double> %3206, splat (double 4.615260e+02)
  %3314 = fadd <8 x double> %3164, %3313
  %3315 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %3316 = fdiv <8 x double> %3314, %3315
  %3317 = fmul <8 x double> %3315, %3316
  %3318 = fdiv <8 x double> %3174, %3317
  %3319 = load <8 x double>, ptr %176, align 64, !tbaa !26, !noalias !142
  %3320 = fsub <8 x double> %3174, %3319
  %3321 = load <8 x double>, ptr %189, align 64, !tbaa !26, !noalias !142
  %3322 = fsub <8 x double> %3320, %3321
  %3323 = load <8 x double>, ptr %191, align 64, !tbaa !26, !noalias !142
  %3324 = load <8 x double>, ptr %135, align 64, !tbaa !26, !noalias !142
  %3325 = fcmp une <8 x double> %3324, splat (double 2.000000e+00)
  %3326 = load <8 x double>, ptr %192, align 64, !tbaa !26, !noalias !142
  %3327 = select <8 x i1> %3325, <8 x double> zeroinitializer, <8 x double> %3326
  %3328 = fadd <8 x double> %3323, %3327
  %3329 = fcmp ogt <8 x double> %3320, zeroinitializer
  %3330 = fcmp ogt <8 x double> %3328, zeroinitializer
  %3331 = and <8 x i1> %3329, %3330
  %3332 = bitcast <8 x i1> %3331 to i8
  %3333 = icmp eq i8 %3332, 0
  br i1 %3333, label %3685, label %3669

3334:                                             ; preds = %3167, %3655
  %3335 = phi <8 x double> [ %3665, %3655 ], [ zeroinitializer, %3167 ]
  %3336 = phi <8 x double> [ %3664, %3655 ], [ zeroinitializer, %3167 ]
  %3337 = phi i64 [ %3666, %3655 ], [ 0, %3167 ]
  %3338 = load ptr, ptr %126, align 8, !tbaa !28, !noalias !139
  %3339 = getelementptr inbounds nuw %struct.Piece, ptr %3338, i64 %3337
  %3340 = getelementptr inbounds nuw i8, ptr %3339, i64 6656
  %3341 = load <8 x double>, ptr %3340, align 64, !tbaa !26, !noalias !139
  %3342 = getelementptr inbounds nuw i8, ptr %3339, i64 6720
  %3343 = load <8 x double>, ptr %3342, align 64, !tbaa !26, !noalias !139
  %3344 = getelementptr inbounds nuw i8, ptr %3339, i64 8576
  %3345 = load <8 x double>, ptr %3344, align 64, !tbaa !26, !noalias !139
  %3346 = fcmp ule <8 x double> %3345, splat (double 1.000000e+00)
  %3347 = fmul <8 x double> %3203, %3343
  %3348 = fcmp ogt <8 x double> %3341, %3347
  %3349 = and <8 x i1> %3346, %3348
  %3350 = fneg <8 x double> %3343
  %3351 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3350, <8 x double> %3203, <8 x double> %3341)
  %3352 = fmul <8 x double> %3272, %3351
  %3353 = select <8 x i1> %3349, <8 x double> %3352, <8 x double> zeroinitializer
  %3354 = fmul <8 x double> %3272, %3350
  %3355 = select <8 x i1> %3349, <8 x double> %3354, <8 x double> zeroinitializer
  %3356 = xor <8 x i1> %3349, splat (i1 true)
  %3357 = bitcast <8 x i1> %3356 to i8
  %3358 = icmp eq i8 %3357, 0
  br i1 %3358, label %3362, label %3359

3359:                                             ; preds = %3334
  %3360 = fdiv <8 x double> %3341, %3343
  %3361 = select <8 x i1> %3349, <8 x double> %3203, <8 x double> %3360
  br label %3362

3362:                                             ; preds = %3359, %3334
  %3363 = phi <8 x double> [ %3361, %3359 ], [ %3203, %3334 ]
  %3364 = getelementptr inbounds nuw i8, ptr %3339, i64 9408
  %3365 = load <8 x i64>, ptr %3364, align 64, !tbaa !26, !noalias !139
  %3366 = getelementptr inbounds nuw i8, ptr %3339, i64 2624
  %3367 = load <8 x double>, ptr %3366, align 64, !tbaa !26, !noalias !139
  %3368 = fcmp ogt <8 x double> %3367, zeroinitializer
  %3369 = select <8 x i1> %3346, <8 x i1> %3368, <8 x i1> zeroinitializer
  %3370 = select <8 x i1> %3369, <8 x i64> %3365, <8 x i64> zeroinitializer
  %3371 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3370)
  %3372 = icmp eq i64 %3371, 0
  br i1 %3372, label %3384, label %3373

3373:                                             ; preds = %3362
  %3374 = getelementptr inbounds nuw i8, ptr %3339, i64 7360
  %3375 = load <8 x double>, ptr %3374, align 64, !tbaa !26, !noalias !139
  %3376 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3350, <8 x double> %3375, <8 x double> %3341)
  %3377 = fcmp ogt <8 x double> %3376, zeroinitializer
  %3378 = select <8 x i1> %3377, <8 x double> %3376, <8 x double> zeroinitializer
  %3379 = fmul <8 x double> %3272, %3378
  %3380 = icmp eq <8 x i64> %3370, zeroinitializer
  %3381 = select <8 x i1> %3380, <8 x double> %3353, <8 x double> %3379
  %3382 = select <8 x i1> %3380, <8 x double> %3363, <8 x double> %3375
  %3383 = select <8 x i1> %3380, <8 x double> %3355, <8 x double> zeroinitializer
  br label %3384

3384:                                             ; preds = %3373, %3362
  %3385 = phi <8 x double> [ %3382, %3373 ], [ %3363, %3362 ]
  %3386 = phi <8 x double> [ %3383, %3373 ], [ %3355, %3362 ]
  %3387 = phi <8 x double> [ %3381, %3373 ], [ %3353, %3362 ]
  %3388 = getelementptr inbounds nuw i8, ptr %3339, i64 6464
  store <8 x double> %3387, ptr %3388, align 64, !tbaa !26, !noalias !139
  %3389 = getelementptr inbounds nuw i8, ptr %3339, i64 6400
  store <8 x double> %3385, ptr %3389, align 64, !tbaa !26, !noalias !139
  %3390 = getelementptr inbounds nuw i8, ptr %3339, i64 6528
  store <8 x double> zeroinitializer, ptr %3390, align 64, !tbaa !26, !noalias !139
  %3391 = load i64, ptr %115, align 16, !tbaa !21, !noalias !139
  %3392 = sitofp i64 %3391 to double
  %3393 = insertelement <8 x double> poison, double %3392, i64 0
  %3394 = shufflevector <8 x double> %3393, <8 x double> poison, <8 x i32> zeroinitializer
  %3395 = getelementptr inbounds nuw i8, ptr %3339, i64 6592
  store <8 x double> %3394, ptr %3395, align 64, !tbaa !26, !noalias !139
  %3396 = getelementptr inbounds nuw i8, ptr %3339, i64 8832
  %3397 = getelementptr inbounds nuw i8, ptr %3339, i64 9088
  %3398 = load <8 x double>, ptr %3397, align 64, !tbaa !26, !noalias !145
  %3399 = fcmp ole <8 x double> %3203, %3398
  %3400 = getelementptr inbounds nuw i8, ptr %3339, i64 9152
  %3401 = load <8 x double>, ptr %3400, align 64, !tbaa !26, !noalias !145
  %3402 = fcmp oge <8 x double> %3203, %3401
  %3403 = or <8 x i1> %3399, %3402
  %3404 = bitcast <8 x i1> %3403 to i8
  %3405 = icmp eq i8 %3404, 0
  br i1 %3405, label %3406, label %3409

3406:                                             ; preds = %3384
  %3407 = getelementptr inbounds nuw i8, ptr %3339, i64 8960
  %3408 = load <8 x double>, ptr %3407, align 64, !tbaa !26, !noalias !145
  br label %3581

3409:                                             ; preds = %3384
  %3410 = load i64, ptr %115, align 16, !tbaa !21, !noalias !148
  %3411 = sitofp i64 %3410 to double
  %3412 = insertelement <8 x double> poison, double %3411, i64 0
  %3413 = shufflevector <8 x double> %3412, <8 x double> poison, <8 x i32> zeroinitializer
  %3414 = getelementptr inbounds nuw i8, ptr %3339, i64 6016
  %3415 = load <8 x double>, ptr %3414, align 64, !tbaa !26, !noalias !148
  %3416 = getelementptr inbounds nuw i8, ptr %3339, i64 4160
  %3417 = load <8 x double>, ptr %3416, align 64, !tbaa !26, !noalias !148
  %3418 = getelementptr inbounds nuw i8, ptr %3339, i64 1920
  %3419 = load <8 x double>, ptr %3418, align 64, !tbaa !26, !noalias !148
  %3420 = fsub <8 x double> %3417, %3419
  %3421 = getelementptr inbounds nuw i8, ptr %3339, i64 8064
  %3422 = load <8 x double>, ptr %3421, align 64, !tbaa !26, !noalias !148
  %3423 = fneg <8 x double> %3420
  %3424 = fmul <8 x double> %3415, %3423
  %3425 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3422, <8 x double> splat (double 2.000000e+00), <8 x double> %3424)
  %3426 = getelementptr inbounds nuw i8, ptr %3339, i64 6080
  %3427 = load <8 x double>, ptr %3426, align 64, !tbaa !26, !noalias !151
  %3428 = getelementptr inbounds nuw i8, ptr %3339, i64 5056
  %3429 = load <8 x double>, ptr %3428, align 64, !tbaa !26, !noalias !151
  %3430 = fsub <8 x double> %3429, %3419
  %3431 = fmul <8 x double> %3427, %3430
  %3432 = getelementptr inbounds nuw i8, ptr %3339, i64 6144
  %3433 = load <8 x double>, ptr %3432, align 64, !tbaa !26, !noalias !151
  %3434 = getelementptr inbounds nuw i8, ptr %3339, i64 5952
  %3435 = load <8 x double>, ptr %3434, align 64, !tbaa !26, !noalias !151
  %3436 = fsub <8 x double> %3435, %3419
  %3437 = fmul <8 x double> %3433, %3436
  %3438 = getelementptr inbounds nuw i8, ptr %3339, i64 6784
  %3439 = load <8 x double>, ptr %3438, align 64, !tbaa !26, !noalias !148
  %3440 = getelementptr inbounds nuw i8, ptr %3339, i64 6848
  %3441 = load <8 x double>, ptr %3440, align 64, !tbaa !26, !noalias !148
  %3442 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3439, <8 x double> %3203, <8 x double> %3441)
  %3443 = fmul <8 x double> %3439, splat (double 1.000000e-09)
  %3444 = icmp sgt i64 %3410, 0
  br i1 %3444, label %3445, label %3551

3445:                                             ; preds = %3409
  %3446 = sext <8 x i1> %3403 to <8 x i64>
  %3447 = getelementptr inbounds nuw i8, ptr %3339, i64 9584
  %3448 = load ptr, ptr %3447, align 16, !tbaa !88, !noalias !148
  %3449 = getelementptr inbounds nuw i8, ptr %3339, i64 9592
  %3450 = load ptr, ptr %3449, align 8, !tbaa !89, !noalias !148
  %3451 = getelementptr inbounds nuw i8, ptr %3339, i64 9472
  %3452 = load i64, ptr %3451, align 64, !tbaa !31, !noalias !148
  %3453 = getelementptr inbounds nuw i8, ptr %3339, i64 9600
  %3454 = getelementptr inbounds nuw i8, ptr %3339, i64 9616
  %3455 = getelementptr inbounds nuw i8, ptr %3339, i64 9552
  %3456 = getelementptr inbounds nuw i8, ptr %3339, i64 9560
  %3457 = getelementptr inbounds nuw i8, ptr %3339, i64 7040
  %3458 = getelementptr inbounds nuw i8, ptr %3339, i64 7104
  br label %3459

3459:                                             ; preds = %3445, %3529
  %3460 = phi <8 x i64> [ %3446, %3445 ], [ %3479, %3529 ]
  %3461 = phi i64 [ %3410, %3445 ], [ %3469, %3529 ]
  %3462 = phi <8 x double> [ splat (double 1.000000e+18), %3445 ], [ %3541, %3529 ]
  %3463 = phi <8 x double> [ zeroinitializer, %3445 ], [ %3545, %3529 ]
  %3464 = phi <8 x double> [ splat (double 1.000000e+18), %3445 ], [ %3504, %3529 ]
  %3465 = phi <8 x double> [ splat (double 1.000000e+00), %3445 ], [ %3503, %3529 ]
  %3466 = phi <8 x double> [ %3413, %3445 ], [ %3549, %3529 ]
  %3467 = phi <8 x double> [ zeroinitializer, %3445 ], [ %3538, %3529 ]
  %3468 = phi <8 x double> [ zeroinitializer, %3445 ], [ %3536, %3529 ]
  %3469 = add nsw i64 %3461, -1
  %3470 = getelementptr inbounds nuw <8 x double>, ptr %3448, i64 %3469
  %3471 = load <8 x double>, ptr %3470, align 64, !tbaa !26, !noalias !148
  %3472 = getelementptr inbounds nuw <8 x double>, ptr %3450, i64 %3469
  %3473 = load <8 x double>, ptr %3472, align 64, !tbaa !26, !noalias !148
  %3474 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3473, <8 x double> %3442, <8 x double> %3471)
  %3475 = fsub <8 x double> %3474, %3442
  %3476 = fcmp ogt <8 x double> %3475, %3443
  %3477 = select <8 x i1> %3476, <8 x i64> %3460, <8 x i64> zeroinitializer
  %3478 = icmp sgt i64 %3461, %3452
  %3479 = select i1 %3478, <8 x i64> %3477, <8 x i64> zeroinitializer
  %3480 = icmp slt i64 %3461, %3410
  br i1 %3480, label %3481, label %3493

3481:                                             ; preds = %3459
  %3482 = load ptr, ptr %3453, align 64, !tbaa !87, !noalias !148
  %3483 = getelementptr inbounds nuw <8 x double>, ptr %3482, i64 %3461
  %3484 = load <8 x double>, ptr %3483, align 64, !tbaa !26, !noalias !148
  %3485 = fmul <8 x double> %3475, %3484
  %3486 = icmp eq <8 x i64> %3479, %3460
  %3487 = select <8 x i1> %3486, <8 x double> zeroinitializer, <8 x double> %3485
  %3488 = fadd <8 x double> %3468, %3487
  %3489 = fadd <8 x double> %3473, splat (double -1.000000e+00)
  %3490 = fmul <8 x double> %3489, %3484
  %3491 = select <8 x i1> %3486, <8 x double> zeroinitializer, <8 x double> %3490
  %3492 = fadd <8 x double> %3467, %3491
  br label %3493

3493:                                             ; preds = %3481, %3459
  %3494 = phi <8 x double> [ %3488, %3481 ], [ %3468, %3459 ]
  %3495 = phi <8 x double> [ %3492, %3481 ], [ %3467, %3459 ]
  br i1 %3478, label %3496, label %3502

3496:                                             ; preds = %3493
  %3497 = fneg <8 x double> %3475
  %3498 = icmp eq <8 x i64> %3479, %3460
  %3499 = select <8 x i1> %3498, <8 x double> %3464, <8 x double> %3497
  %3500 = fsub <8 x double> splat (double 1.000000e+00), %3473
  %3501 = select <8 x i1> %3498, <8 x double> %3465, <8 x double> %3500
  br label %3502

3502:                                             ; preds = %3496, %3493
  %3503 = phi <8 x double> [ %3501, %3496 ], [ %3465, %3493 ]
  %3504 = phi <8 x double> [ %3499, %3496 ], [ %3464, %3493 ]
  %3505 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3479)
  %3506 = icmp eq i64 %3505, 0
  br i1 %3506, label %3551, label %3507

3507:                                             ; preds = %3502
  %3508 = load ptr, ptr %3454, align 16, !tbaa !48, !noalias !148
  %3509 = getelementptr inbounds nuw <8 x double>, ptr %3508, i64 %3469
  %3510 = load <8 x double>, ptr %3509, align 64, !tbaa !26, !noalias !148
  %3511 = fmul <8 x double> %3425, %3510
  %3512 = load ptr, ptr %3455, align 16, !tbaa !47, !noalias !148
  %3513 = getelementptr inbounds nuw <8 x double>, ptr %3512, i64 %3469
  %3514 = load <8 x double>, ptr %3513, align 64, !tbaa !26, !noalias !148
  %3515 = load ptr, ptr %3456, align 8, !tbaa !65, !noalias !148
  %3516 = getelementptr inbounds nuw <8 x double>, ptr %3515, i64 %3469
  %3517 = load <8 x double>, ptr %3516, align 64, !tbaa !26, !noalias !148
  %3518 = fmul <8 x double> %3437, %3517
  %3519 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3431, <8 x double> %3514, <8 x double> %3518)
  %3520 = fmul <8 x double> %3510, %3519
  %3521 = icmp ne i64 %3461, 1
  %3522 = icmp eq i64 %3469, %3452
  %3523 = select i1 %3521, i1 %3522, i1 false
  br i1 %3523, label %3524, label %3529

3524:                                             ; preds = %3507
  %3525 = load <8 x double>, ptr %3457, align 64, !tbaa !26, !noalias !148
  %3526 = fadd <8 x double> %3511, %3525
  %3527 = load <8 x double>, ptr %3458, align 64, !tbaa !26, !noalias !148
  %3528 = fadd <8 x double> %3520, %3527
  br label %3529

3529:                                             ; preds = %3507, %3524
  %3530 = phi <8 x double> [ %3526, %3524 ], [ %3511, %3507 ]
  %3531 = phi <8 x double> [ %3528, %3524 ], [ %3520, %3507 ]
  %3532 = fneg <8 x double> %3531
  %3533 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3530, <8 x double> %3442, <8 x double> %3532)
  %3534 = icmp eq <8 x i64> %3479, zeroinitializer
  %3535 = select <8 x i1> %3534, <8 x double> zeroinitializer, <8 x double> %3533
  %3536 = fadd <8 x double> %3494, %3535
  %3537 = select <8 x i1> %3534, <8 x double> zeroinitializer, <8 x double> %3530
  %3538 = fadd <8 x double> %3495, %3537
  %3539 = fcmp olt <8 x double> %3462, %3475
  %3540 = select <8 x i1> %3534, <8 x i1> splat (i1 true), <8 x i1> %3539
  %3541 = select <8 x i1> %3540, <8 x double> %3462, <8 x double> %3475
  %3542 = fsub <8 x double> splat (double 1.000000e+00), %3473
  %3543 = fcmp ogt <8 x double> %3463, %3542
  %3544 = select <8 x i1> %3534, <8 x i1> splat (i1 true), <8 x i1> %3543
  %3545 = select <8 x i1> %3544, <8 x double> %3463, <8 x double> %3542
  %3546 = uitofp nneg i64 %3469 to double
  %3547 = insertelement <8 x double> poison, double %3546, i64 0
  %3548 = shufflevector <8 x double> %3547, <8 x double> poison, <8 x i32> zeroinitializer
  %3549 = select <8 x i1> %3534, <8 x double> %3466, <8 x double> %3548
  %3550 = icmp samesign ugt i64 %3461, 1
  br i1 %3550, label %3459, label %3551, !llvm.loop !154

3551:                                             ; preds = %3529, %3502, %3409
  %3552 = phi <8 x double> [ %3413, %3409 ], [ %3466, %3502 ], [ %3549, %3529 ]
  %3553 = phi <8 x double> [ zeroinitializer, %3409 ], [ %3463, %3502 ], [ %3545, %3529 ]
  %3554 = phi <8 x double> [ splat (double 1.000000e+18), %3409 ], [ %3462, %3502 ], [ %3541, %3529 ]
  %3555 = phi <8 x double> [ zeroinitializer, %3409 ], [ %3494, %3502 ], [ %3536, %3529 ]
  %3556 = phi <8 x double> [ zeroinitializer, %3409 ], [ %3495, %3502 ], [ %3538, %3529 ]
  %3557 = phi <8 x double> [ splat (double 1.000000e+00), %3409 ], [ %3503, %3502 ], [ %3503, %3529 ]
  %3558 = phi <8 x double> [ splat (double 1.000000e+18), %3409 ], [ %3504, %3502 ], [ %3504, %3529 ]
  %3559 = fmul <8 x double> %3439, %3556
  %3560 = fmul <8 x double> %3439, %3557
  %3561 = fdiv <8 x double> %3558, %3560
  %3562 = fsub <8 x double> %3203, %3561
  %3563 = fcmp ogt <8 x double> %3553, splat (double 1.000000e-09)
  %3564 = select <8 x i1> %3563, <8 x double> %3553, <8 x double> splat (double 1.000000e-09)
  %3565 = fmul <8 x double> %3439, %3564
  %3566 = fdiv <8 x double> %3554, %3565
  %3567 = fadd <8 x double> %3203, %3566
  %3568 = load <8 x double>, ptr %3396, align 64, !tbaa !26, !noalias !145
  %3569 = select <8 x i1> %3403, <8 x double> %3555, <8 x double> %3568
  store <8 x double> %3569, ptr %3396, align 64, !tbaa !26, !noalias !145
  %3570 = getelementptr inbounds nuw i8, ptr %3339, i64 8896
  %3571 = load <8 x double>, ptr %3570, align 64, !tbaa !26, !noalias !145
  %3572 = select <8 x i1> %3403, <8 x double> %3559, <8 x double> %3571
  store <8 x double> %3572, ptr %3570, align 64, !tbaa !26, !noalias !145
  %3573 = getelementptr inbounds nuw i8, ptr %3339, i64 8960
  %3574 = load <8 x double>, ptr %3573, align 64, !tbaa !26, !noalias !145
  %3575 = select <8 x i1> %3403, <8 x double> %3552, <8 x double> %3574
  store <8 x double> %3575, ptr %3573, align 64, !tbaa !26, !noalias !145
  %3576 = getelementptr inbounds nuw i8, ptr %3339, i64 9024
  %3577 = load <8 x double>, ptr %3576, align 64, !tbaa !26, !noalias !145
  %3578 = select <8 x i1> %3403, <8 x double> %3203, <8 x double> %3577
  store <8 x double> %3578, ptr %3576, align 64, !tbaa !26, !noalias !145
  %3579 = select <8 x i1> %3403, <8 x double> %3562, <8 x double> %3398
  store <8 x double> %3579, ptr %3397, align 64, !tbaa !26, !noalias !145
  %3580 = select <8 x i1> %3403, <8 x double> %3567, <8 x double> %3401
  store <8 x double> %3580, ptr %3400, align 64, !tbaa !26, !noalias !145
  br label %3581

3581:                                             ; preds = %3406, %3551
  %3582 = phi <8 x double> [ %3408, %3406 ], [ %3575, %3551 ]
  %3583 = load i64, ptr %115, align 16, !tbaa !21, !noalias !139
  %3584 = sitofp i64 %3583 to double
  %3585 = insertelement <8 x double> poison, double %3584, i64 0
  %3586 = shufflevector <8 x double> %3585, <8 x double> poison, <8 x i32> zeroinitializer
  %3587 = fcmp olt <8 x double> %3582, %3586
  %3588 = and <8 x i1> %3346, %3587
  %3589 = bitcast <8 x i1> %3588 to i8
  %3590 = icmp eq i8 %3589, 0
  br i1 %3590, label %3655, label %3591

3591:                                             ; preds = %3581
  %3592 = getelementptr inbounds nuw i8, ptr %3339, i64 8896
  %3593 = load <8 x double>, ptr %3592, align 64, !tbaa !26, !noalias !145
  %3594 = getelementptr inbounds nuw i8, ptr %3339, i64 9024
  %3595 = load <8 x double>, ptr %3594, align 64, !tbaa !26, !noalias !145
  %3596 = fsub <8 x double> %3203, %3595
  %3597 = load <8 x double>, ptr %3396, align 64, !tbaa !26, !noalias !145
  %3598 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3593, <8 x double> %3596, <8 x double> %3597)
  %3599 = getelementptr inbounds nuw i8, ptr %3339, i64 7488
  %3600 = load <8 x double>, ptr %3599, align 64, !tbaa !26, !noalias !139
  %3601 = getelementptr inbounds nuw i8, ptr %3339, i64 6336
  %3602 = load <8 x double>, ptr %3601, align 64, !tbaa !26, !noalias !139
  %3603 = getelementptr inbounds nuw i8, ptr %3339, i64 8384
  %3604 = load <8 x double>, ptr %3603, align 64, !tbaa !26, !noalias !139
  %3605 = fneg <8 x double> %3604
  %3606 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3600, <8 x double> %3602, <8 x double> %3605)
  %3607 = getelementptr inbounds nuw i8, ptr %3339, i64 8320
  %3608 = load <8 x double>, ptr %3607, align 64, !tbaa !26, !noalias !139
  %3609 = fadd <8 x double> %3600, %3608
  %3610 = getelementptr inbounds nuw i8, ptr %3339, i64 9280
  %3611 = load <8 x i64>, ptr %3610, align 64, !tbaa !26, !noalias !139
  %3612 = getelementptr inbounds nuw i8, ptr %3339, i64 9672
  %3613 = load ptr, ptr %3612, align 8, !tbaa !130, !noalias !139
  %3614 = load <8 x double>, ptr %3613, align 64, !tbaa !26, !noalias !139
  %3615 = fmul <8 x double> %3600, %3614
  %3616 = icmp eq <8 x i64> %3611, zeroinitializer
  %3617 = select <8 x i1> %3616, <8 x double> %3606, <8 x double> %3615
  %3618 = getelementptr inbounds nuw i8, ptr %3339, i64 9680
  %3619 = load ptr, ptr %3618, align 16, !tbaa !131, !noalias !139
  %3620 = load <8 x double>, ptr %3619, align 64, !tbaa !26, !noalias !139
  %3621 = fsub <8 x double> splat (double 1.000000e+00), %3620
  %3622 = fmul <8 x double> %3600, %3621
  %3623 = select <8 x i1> %3616, <8 x double> %3609, <8 x double> %3622
  %3624 = fneg <8 x double> %3623
  %3625 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3624, <8 x double> %3203, <8 x double> %3617)
  %3626 = fcmp ogt <8 x double> %3598, zeroinitializer
  %3627 = fcmp oge <8 x double> %3625, zeroinitializer
  %3628 = and <8 x i1> %3626, %3627
  %3629 = and <8 x i1> %3588, %3628
  %3630 = sext <8 x i1> %3629 to <8 x i64>
  %3631 = xor <8 x i64> %3630, splat (i64 -1)
  %3632 = fadd <8 x double> %3598, %3625
  %3633 = fcmp ogt <8 x double> %3632, zeroinitializer
  %3634 = and <8 x i1> %3588, %3633
  %3635 = select <8 x i1> %3634, <8 x i64> %3631, <8 x i64> zeroinitializer
  %3636 = or <8 x i64> %3635, %3630
  %3637 = fmul <8 x double> %3272, %3625
  %3638 = select <8 x i1> %3629, <8 x double> %3637, <8 x double> zeroinitializer
  %3639 = icmp eq <8 x i64> %3636, zeroinitializer
  %3640 = select <8 x i1> %3639, <8 x double> %3387, <8 x double> %3638
  store <8 x double> %3640, ptr %3388, align 64, !tbaa !26, !noalias !139
  %3641 = select <8 x i1> %3639, <8 x double> %3385, <8 x double> %3203
  store <8 x double> %3641, ptr %3389, align 64, !tbaa !26, !noalias !139
  %3642 = fsub <8 x double> %3593, %3623
  %3643 = fmul <8 x double> %3272, %3642
  %3644 = select <8 x i1> %3639, <8 x double> %3386, <8 x double> %3643
  %3645 = fmul <8 x double> %3272, %3598
  %3646 = fmul <8 x double> %3272, %3632
  %3647 = icmp eq <8 x i64> %3635, zeroinitializer
  %3648 = select <8 x i1> %3647, <8 x double> zeroinitializer, <8 x double> %3646
  %3649 = select <8 x i1> %3629, <8 x double> %3645, <8 x double> %3648
  store <8 x double> %3649, ptr %3390, align 64, !tbaa !26, !noalias !139
  %3650 = load i64, ptr %115, align 16, !tbaa !21, !noalias !139
  %3651 = sitofp i64 %3650 to double
  %3652 = insertelement <8 x double> poison, double %3651, i64 0
  %3653 = shufflevector <8 x double> %3652, <8 x double> poison, <8 x i32> zeroinitializer
  %3654 = select <8 x i1> %3639, <8 x double> %3653, <8 x double> %3582
  store <8 x double> %3654, ptr %3395, align 64, !tbaa !26, !noalias !139
  br label %3655

3655:                                             ; preds = %3581, %3591
  %3656 = phi <8 x double> [ %3649, %3591 ], [ zeroinitializer, %3581 ]
  %3657 = phi <8 x double> [ %3640, %3591 ], [ %3387, %3581 ]
  %3658 = phi <8 x double> [ %3644, %3591 ], [ %3386, %3581 ]
  %3659 = getelementptr inbounds nuw i8, ptr %3339, i64 128
  %3660 = load <8 x double>, ptr %3659, align 64, !tbaa !26, !noalias !139
  %3661 = fadd <8 x double> %3657, %3656
  %3662 = fmul <8 x double> %3660, %3661
  %3663 = fmul <8 x double> %3658, %3660
  %3664 = fadd <8 x double> %3336, %3662
  %3665 = fadd <8 x double> %3335, %3663
  %3666 = add nuw nsw i64 %3337, 1
  %3667 = load i64, ptr %153, align 8, !tbaa !20, !noalias !139
  %3668 = icmp slt i64 %3666, %3667
  br i1 %3668, label %3334, label %3275, !llvm.loop !155

3669:                                             ; preds = %3275
  %3670 = fmul <8 x double> %3316, splat (double 2.000000e+00)
  %3671 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3670)
  %3672 = fmul <8 x double> %3671, %3328
  %3673 = fadd <8 x double> %3320, splat (double 2.000000e+02)
  %3674 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3673)
  %3675 = select <8 x i1> %3329, <8 x double> %3674, <8 x double> splat (double 0x402C48C6001F0AC0)
  %3676 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3320, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3677 = fmul <8 x double> %3676, %3672
  %3678 = fmul <8 x double> %3675, %3675
  %3679 = fmul <8 x double> %3675, %3678
  %3680 = fdiv <8 x double> %3677, %3679
  %3681 = fmul <8 x double> %3320, %3672
  %3682 = fdiv <8 x double> %3681, %3675
  %3683 = select <8 x i1> %3331, <8 x double> %3682, <8 x double> zeroinitializer
  %3684 = select <8 x i1> %3331, <8 x double> %3680, <8 x double> zeroinitializer
  br label %3685

3685:                                             ; preds = %3275, %3669
  %3686 = phi <8 x double> [ %3683, %3669 ], [ zeroinitializer, %3275 ]
  %3687 = phi <8 x double> [ %3684, %3669 ], [ zeroinitializer, %3275 ]
  %3688 = fcmp ule <8 x double> %3322, zeroinitializer
  %3689 = load <8 x double>, ptr %193, align 64, !tbaa !26, !noalias !142
  %3690 = fmul <8 x double> %3322, %3689
  %3691 = select <8 x i1> %3688, <8 x double> zeroinitializer, <8 x double> %3690
  %3692 = fadd <8 x double> %3686, %3691
  %3693 = select <8 x i1> %3688, <8 x double> zeroinitializer, <8 x double> %3689
  %3694 = fadd <8 x double> %3687, %3693
  %3695 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %3696 = fsub <8 x double> %3319, %3174
  %3697 = fcmp ogt <8 x double> %3696, zeroinitializer
  %3698 = fcmp ogt <8 x double> %3695, zeroinitializer
  %3699 = and <8 x i1> %3697, %3698
  %3700 = bitcast <8 x i1> %3699 to i8
  %3701 = icmp eq i8 %3700, 0
  br i1 %3701, label %3718, label %3702

3702:                                             ; preds = %3685
  %3703 = fmul <8 x double> %3166, %3695
  %3704 = fadd <8 x double> %3696, splat (double 2.000000e+02)
  %3705 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3704)
  %3706 = select <8 x i1> %3697, <8 x double> %3705, <8 x double> splat (double 0x402C48C6001F0AC0)
  %3707 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3696, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3708 = fmul <8 x double> %3707, %3703
  %3709 = fmul <8 x double> %3706, %3706
  %3710 = fmul <8 x double> %3706, %3709
  %3711 = fdiv <8 x double> %3708, %3710
  %3712 = fmul <8 x double> %3696, %3703
  %3713 = fdiv <8 x double> %3712, %3706
  %3714 = fmul <8 x double> %3713, splat (double -2.870530e+02)
  %3715 = select <8 x i1> %3699, <8 x double> %3714, <8 x double> splat (double -0.000000e+00)
  %3716 = fmul <8 x double> %3711, splat (double 2.870530e+02)
  %3717 = select <8 x i1> %3699, <8 x double> %3716, <8 x double> zeroinitializer
  br label %3718

3718:                                             ; preds = %3685, %3702
  %3719 = phi <8 x double> [ %3715, %3702 ], [ splat (double -0.000000e+00), %3685 ]
  %3720 = phi <8 x double> [ %3717, %3702 ], [ zeroinitializer, %3685 ]
  %3721 = fmul <8 x double> %3207, splat (double 4.615260e+02)
  %3722 = fmul <8 x double> %3207, %3721
  %3723 = fmul <8 x double> %3174, %3271
  %3724 = fdiv <8 x double> %3722, %3723
  %3725 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %3726 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3725, <8 x double> %3174, <8 x double> %3148)
  %3727 = fsub <8 x double> %3310, %3269
  %3728 = fmul <8 x double> %3727, splat (double -4.615260e+02)
  %3729 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3151, <8 x double> %3726, <8 x double> %3728)
  %3730 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3318, <8 x double> %3692, <8 x double> %3719)
  %3731 = fadd <8 x double> %3730, %3729
  %3732 = fneg <8 x double> %3254
  %3733 = fmul <8 x double> %3261, %3732
  %3734 = fdiv <8 x double> %3733, %3262
  %3735 = fmul <8 x double> %3734, %3260
  %3736 = select <8 x i1> %3255, <8 x double> splat (double -0.000000e+00), <8 x double> %3735
  %3737 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3312, <8 x double> %3724, <8 x double> %3736)
  %3738 = fmul <8 x double> %3737, splat (double -4.615260e+02)
  %3739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3151, <8 x double> %3725, <8 x double> %3738)
  %3740 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3318, <8 x double> %3694, <8 x double> %3720)
  %3741 = fadd <8 x double> %3740, %3739
  %3742 = fcmp ule <8 x double> %3731, zeroinitializer
  %3743 = fcmp olt <8 x double> %3171, %3174
  %3744 = select <8 x i1> %3742, <8 x i1> splat (i1 true), <8 x i1> %3743
  %3745 = select <8 x i1> %3744, <8 x double> %3171, <8 x double> %3174
  %3746 = fcmp ogt <8 x double> %3170, %3174
  %3747 = select <8 x i1> %3746, <8 x double> %3170, <8 x double> %3174
  %3748 = select <8 x i1> %3742, <8 x double> %3747, <8 x double> %3170
  %3749 = fdiv <8 x double> %3731, %3741
  %3750 = fsub <8 x double> %3174, %3749
  %3751 = fsub <8 x double> %3750, %3174
  %3752 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3751)
  %3753 = fcmp uge <8 x double> %3752, splat (double 2.000000e-01)
  %3754 = fcmp uge <8 x double> %3748, %3750
  %3755 = fcmp uge <8 x double> %3750, %3745
  %3756 = or <8 x i1> %3754, %3755
  %3757 = and <8 x i1> %3753, %3756
  %3758 = fadd <8 x double> %3748, %3745
  %3759 = fmul <8 x double> %3758, splat (double 5.000000e-01)
  %3760 = select <8 x i1> %3757, <8 x double> %3759, <8 x double> %3750
  %3761 = fsub <8 x double> %3760, %3174
  %3762 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3761)
  %3763 = fcmp oge <8 x double> %3762, splat (double 2.000000e-01)
  %3764 = select <8 x i1> %3763, <8 x i64> %3172, <8 x i64> zeroinitializer
  %3765 = icmp eq <8 x i64> %3764, zeroinitializer
  %3766 = select <8 x i1> %3765, <8 x double> %3174, <8 x double> %3760
  %3767 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3764)
  %3768 = icmp ne i64 %3767, 0
  %3769 = add nuw nsw i32 %3173, 1
  %3770 = icmp samesign ult i32 %3173, 59
  %3771 = select i1 %3768, i1 %3770, i1 false
  br i1 %3771, label %3167, label %3772, !llvm.loop !156

3772:                                             ; preds = %3718
  %3773 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3774 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %3775 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3776 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %3777 = fmul <8 x double> %3775, %3776
  %3778 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3773, <8 x double> %3774, <8 x double> %3777)
  %3779 = fsub <8 x double> %3319, %3766
  %3780 = fcmp ogt <8 x double> %3779, zeroinitializer
  %3781 = and <8 x i1> %3698, %3780
  %3782 = bitcast <8 x i1> %3781 to i8
  %3783 = icmp eq i8 %3782, 0
  br i1 %3783, label %3793, label %3784

3784:                                             ; preds = %3772
  %3785 = fmul <8 x double> %3166, %3695
  %3786 = fadd <8 x double> %3779, splat (double 2.000000e+02)
  %3787 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3786)
  %3788 = select <8 x i1> %3780, <8 x double> %3787, <8 x double> splat (double 0x402C48C6001F0AC0)
  %3789 = fmul <8 x double> %3785, %3779
  %3790 = fdiv <8 x double> %3789, %3788
  %3791 = fmul <8 x double> %3790, splat (double 2.870530e+02)
  %3792 = select <8 x i1> %3781, <8 x double> %3791, <8 x double> zeroinitializer
  br label %3793

3793:                                             ; preds = %3772, %3784
  %3794 = phi <8 x double> [ %3792, %3784 ], [ zeroinitializer, %3772 ]
  %3795 = fdiv <8 x double> %3794, %3151
  %3796 = fsub <8 x double> %3795, %3778
  %3797 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3798 = fmul <8 x double> %3316, %3797
  %3799 = fdiv <8 x double> %3692, %3798
  %3800 = fadd <8 x double> %3725, %3799
  %3801 = fdiv <8 x double> %3796, %3800
  %3802 = fcmp ogt <8 x double> %3801, zeroinitializer
  %3803 = select <8 x i1> %3802, <8 x double> %3801, <8 x double> zeroinitializer
  %3804 = fcmp olt <8 x double> %3803, %3766
  %3805 = select <8 x i1> %3804, <8 x double> %3803, <8 x double> %3766
  %3806 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3807 = select <8 x i1> %3162, <8 x double> %3806, <8 x double> %3805
  store <8 x double> %3807, ptr %183, align 64, !tbaa !26
  %3808 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3809 = select <8 x i1> %3162, <8 x double> %3139, <8 x double> %3808
  store <8 x double> %3809, ptr %184, align 64, !tbaa !26
  store <8 x double> %3766, ptr %177, align 64, !tbaa !26
  store <8 x double> %3203, ptr %197, align 64, !tbaa !26
  br label %4131

3810:                                             ; preds = %3118
  store <8 x double> %3120, ptr %197, align 64, !tbaa !26
  %3811 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3120, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3812 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3120, <8 x double> %3811, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3813 = fdiv <8 x double> splat (double 1.000000e+00), %3812
  %3814 = icmp sgt i64 %2868, 0
  br i1 %3814, label %3815, label %4134

3815:                                             ; preds = %3810, %4127
  %3816 = phi i64 [ %4128, %4127 ], [ 0, %3810 ]
  %3817 = load ptr, ptr %126, align 8, !tbaa !28, !noalias !157
  %3818 = getelementptr inbounds nuw %struct.Piece, ptr %3817, i64 %3816
  %3819 = getelementptr inbounds nuw i8, ptr %3818, i64 6656
  %3820 = load <8 x double>, ptr %3819, align 64, !tbaa !26, !noalias !157
  %3821 = getelementptr inbounds nuw i8, ptr %3818, i64 6720
  %3822 = load <8 x double>, ptr %3821, align 64, !tbaa !26, !noalias !157
  %3823 = getelementptr inbounds nuw i8, ptr %3818, i64 8576
  %3824 = load <8 x double>, ptr %3823, align 64, !tbaa !26, !noalias !157
  %3825 = fcmp ule <8 x double> %3824, splat (double 1.000000e+00)
  %3826 = fmul <8 x double> %3120, %3822
  %3827 = fcmp ogt <8 x double> %3820, %3826
  %3828 = and <8 x i1> %3825, %3827
  %3829 = fneg <8 x double> %3822
  %3830 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3829, <8 x double> %3120, <8 x double> %3820)
  %3831 = fmul <8 x double> %3813, %3830
  %3832 = select <8 x i1> %3828, <8 x double> %3831, <8 x double> zeroinitializer
  %3833 = xor <8 x i1> %3828, splat (i1 true)
  %3834 = bitcast <8 x i1> %3833 to i8
  %3835 = icmp eq i8 %3834, 0
  br i1 %3835, label %3839, label %3836

3836:                                             ; preds = %3815
  %3837 = fdiv <8 x double> %3820, %3822
  %3838 = select <8 x i1> %3828, <8 x double> %3120, <8 x double> %3837
  br label %3839

3839:                                             ; preds = %3836, %3815
  %3840 = phi <8 x double> [ %3838, %3836 ], [ %3120, %3815 ]
  %3841 = getelementptr inbounds nuw i8, ptr %3818, i64 9408
  %3842 = load <8 x i64>, ptr %3841, align 64, !tbaa !26, !noalias !157
  %3843 = getelementptr inbounds nuw i8, ptr %3818, i64 2624
  %3844 = load <8 x double>, ptr %3843, align 64, !tbaa !26, !noalias !157
  %3845 = fcmp ogt <8 x double> %3844, zeroinitializer
  %3846 = select <8 x i1> %3825, <8 x i1> %3845, <8 x i1> zeroinitializer
  %3847 = select <8 x i1> %3846, <8 x i64> %3842, <8 x i64> zeroinitializer
  %3848 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3847)
  %3849 = icmp eq i64 %3848, 0
  br i1 %3849, label %3860, label %3850

3850:                                             ; preds = %3839
  %3851 = getelementptr inbounds nuw i8, ptr %3818, i64 7360
  %3852 = load <8 x double>, ptr %3851, align 64, !tbaa !26, !noalias !157
  %3853 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3829, <8 x double> %3852, <8 x double> %3820)
  %3854 = fcmp ogt <8 x double> %3853, zeroinitializer
  %3855 = select <8 x i1> %3854, <8 x double> %3853, <8 x double> zeroinitializer
  %3856 = fmul <8 x double> %3813, %3855
  %3857 = icmp eq <8 x i64> %3847, zeroinitializer
  %3858 = select <8 x i1> %3857, <8 x double> %3832, <8 x double> %3856
  %3859 = select <8 x i1> %3857, <8 x double> %3840, <8 x double> %3852
  br label %3860

3860:                                             ; preds = %3850, %3839
  %3861 = phi <8 x double> [ %3859, %3850 ], [ %3840, %3839 ]
  %3862 = phi <8 x double> [ %3858, %3850 ], [ %3832, %3839 ]
  %3863 = getelementptr inbounds nuw i8, ptr %3818, i64 6464
  store <8 x double> %3862, ptr %3863, align 64, !tbaa !26, !noalias !157
  %3864 = getelementptr inbounds nuw i8, ptr %3818, i64 6400
  store <8 x double> %3861, ptr %3864, align 64, !tbaa !26, !noalias !157
  %3865 = getelementptr inbounds nuw i8, ptr %3818, i64 6528
  store <8 x double> zeroinitializer, ptr %3865, align 64, !tbaa !26, !noalias !157
  %3866 = load i64, ptr %115, align 16, !tbaa !21, !noalias !157
  %3867 = sitofp i64 %3866 to double
  %3868 = insertelement <8 x double> poison, double %3867, i64 0
  %3869 = shufflevector <8 x double> %3868, <8 x double> poison, <8 x i32> zeroinitializer
  %3870 = getelementptr inbounds nuw i8, ptr %3818, i64 6592
  store <8 x double> %3869, ptr %3870, align 64, !tbaa !26, !noalias !157
  %3871 = getelementptr inbounds nuw i8, ptr %3818, i64 8832
  %3872 = getelementptr inbounds nuw i8, ptr %3818, i64 9088
  %3873 = load <8 x double>, ptr %3872, align 64, !tbaa !26, !noalias !160
  %3874 = fcmp ole <8 x double> %3120, %3873
  %3875 = getelementptr inbounds nuw i8, ptr %3818, i64 9152
  %3876 = load <8 x double>, ptr %3875, align 64, !tbaa !26, !noalias !160
  %3877 = fcmp oge <8 x double> %3120, %3876
  %3878 = or <8 x i1> %3874, %3877
  %3879 = bitcast <8 x i1> %3878 to i8
  %3880 = icmp eq i8 %3879, 0
  br i1 %3880, label %3881, label %3884

3881:                                             ; preds = %3860
  %3882 = getelementptr inbounds nuw i8, ptr %3818, i64 8960
  %3883 = load <8 x double>, ptr %3882, align 64, !tbaa !26, !noalias !160
  br label %4056

3884:                                             ; preds = %3860
  %3885 = load i64, ptr %115, align 16, !tbaa !21, !noalias !163
  %3886 = sitofp i64 %3885 to double
  %3887 = insertelement <8 x double> poison, double %3886, i64 0
  %3888 = shufflevector <8 x double> %3887, <8 x double> poison, <8 x i32> zeroinitializer
  %3889 = getelementptr inbounds nuw i8, ptr %3818, i64 6016
  %3890 = load <8 x double>, ptr %3889, align 64, !tbaa !26, !noalias !163
  %3891 = getelementptr inbounds nuw i8, ptr %3818, i64 4160
  %3892 = load <8 x double>, ptr %3891, align 64, !tbaa !26, !noalias !163
  %3893 = getelementptr inbounds nuw i8, ptr %3818, i64 1920
  %3894 = load <8 x double>, ptr %3893, align 64, !tbaa !26, !noalias !163
  %3895 = fsub <8 x double> %3892, %3894
  %3896 = getelementptr inbounds nuw i8, ptr %3818, i64 8064
  %3897 = load <8 x double>, ptr %3896, align 64, !tbaa !26, !noalias !163
  %3898 = fneg <8 x double> %3895
  %3899 = fmul <8 x double> %3890, %3898
  %3900 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3897, <8 x double> splat (double 2.000000e+00), <8 x double> %3899)
  %3901 = getelementptr inbounds nuw i8, ptr %3818, i64 6080
  %3902 = load <8 x double>, ptr %3901, align 64, !tbaa !26, !noalias !166
  %3903 = getelementptr inbounds nuw i8, ptr %3818, i64 5056
  %3904 = load <8 x double>, ptr %3903, align 64, !tbaa !26, !noalias !166
  %3905 = fsub <8 x double> %3904, %3894
  %3906 = fmul <8 x double> %3902, %3905
  %3907 = getelementptr inbounds nuw i8, ptr %3818, i64 6144
  %3908 = load <8 x double>, ptr %3907, align 64, !tbaa !26, !noalias !166
  %3909 = getelementptr inbounds nuw i8, ptr %3818, i64 5952
  %3910 = load <8 x double>, ptr %3909, align 64, !tbaa !26, !noalias !166
  %3911 = fsub <8 x double> %3910, %3894
  %3912 = fmul <8 x double> %3908, %3911
  %3913 = getelementptr inbounds nuw i8, ptr %3818, i64 6784
  %3914 = load <8 x double>, ptr %3913, align 64, !tbaa !26, !noalias !163
  %3915 = getelementptr inbounds nuw i8, ptr %3818, i64 6848
  %3916 = load <8 x double>, ptr %3915, align 64, !tbaa !26, !noalias !163
  %3917 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3914, <8 x double> %3120, <8 x double> %3916)
  %3918 = fmul <8 x double> %3914, splat (double 1.000000e-09)
  %3919 = icmp sgt i64 %3885, 0
  br i1 %3919, label %3920, label %4026

3920:                                             ; preds = %3884
  %3921 = sext <8 x i1> %3878 to <8 x i64>
  %3922 = getelementptr inbounds nuw i8, ptr %3818, i64 9584
  %3923 = load ptr, ptr %3922, align 16, !tbaa !88, !noalias !163
  %3924 = getelementptr inbounds nuw i8, ptr %3818, i64 9592
  %3925 = load ptr, ptr %3924, align 8, !tbaa !89, !noalias !163
  %3926 = getelementptr inbounds nuw i8, ptr %3818, i64 9472
  %3927 = load i64, ptr %3926, align 64, !tbaa !31, !noalias !163
  %3928 = getelementptr inbounds nuw i8, ptr %3818, i64 9600
  %3929 = getelementptr inbounds nuw i8, ptr %3818, i64 9616
  %3930 = getelementptr inbounds nuw i8, ptr %3818, i64 9552
  %3931 = getelementptr inbounds nuw i8, ptr %3818, i64 9560
  %3932 = getelementptr inbounds nuw i8, ptr %3818, i64 7040
  %3933 = getelementptr inbounds nuw i8, ptr %3818, i64 7104
  br label %3934

3934:                                             ; preds = %3920, %4004
  %3935 = phi <8 x i64> [ %3921, %3920 ], [ %3954, %4004 ]
  %3936 = phi i64 [ %3885, %3920 ], [ %3944, %4004 ]
  %3937 = phi <8 x double> [ splat (double 1.000000e+18), %3920 ], [ %4016, %4004 ]
  %3938 = phi <8 x double> [ zeroinitializer, %3920 ], [ %4020, %4004 ]
  %3939 = phi <8 x double> [ splat (double 1.000000e+18), %3920 ], [ %3979, %4004 ]
  %3940 = phi <8 x double> [ splat (double 1.000000e+00), %3920 ], [ %3978, %4004 ]
  %3941 = phi <8 x double> [ %3888, %3920 ], [ %4024, %4004 ]
  %3942 = phi <8 x double> [ zeroinitializer, %3920 ], [ %4013, %4004 ]
  %3943 = phi <8 x double> [ zeroinitializer, %3920 ], [ %4011, %4004 ]
  %3944 = add nsw i64 %3936, -1
  %3945 = getelementptr inbounds nuw <8 x double>, ptr %3923, i64 %3944
  %3946 = load <8 x double>, ptr %3945, align 64, !tbaa !26, !noalias !163
  %3947 = getelementptr inbounds nuw <8 x double>, ptr %3925, i64 %3944
  %3948 = load <8 x double>, ptr %3947, align 64, !tbaa !26, !noalias !163
  %3949 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3948, <8 x double> %3917, <8 x double> %3946)
  %3950 = fsub <8 x double> %3949, %3917
  %3951 = fcmp ogt <8 x double> %3950, %3918
  %3952 = select <8 x i1> %3951, <8 x i64> %3935, <8 x i64> zeroinitializer
  %3953 = icmp sgt i64 %3936, %3927
  %3954 = select i1 %3953, <8 x i64> %3952, <8 x i64> zeroinitializer
  %3955 = icmp slt i64 %3936, %3885
  br i1 %3955, label %3956, label %3968

3956:                                             ; preds = %3934
  %3957 = load ptr, ptr %3928, align 64, !tbaa !87, !noalias !163
  %3958 = getelementptr inbounds nuw <8 x double>, ptr %3957, i64 %3936
  %3959 = load <8 x double>, ptr %3958, align 64, !tbaa !26, !noalias !163
  %3960 = fmul <8 x double> %3950, %3959
  %3961 = icmp eq <8 x i64> %3954, %3935
  %3962 = select <8 x i1> %3961, <8 x double> zeroinitializer, <8 x double> %3960
  %3963 = fadd <8 x double> %3943, %3962
  %3964 = fadd <8 x double> %3948, splat (double -1.000000e+00)
  %3965 = fmul <8 x double> %3964, %3959
  %3966 = select <8 x i1> %3961, <8 x double> zeroinitializer, <8 x double> %3965
  %3967 = fadd <8 x double> %3942, %3966
  br label %3968

3968:                                             ; preds = %3956, %3934
  %3969 = phi <8 x double> [ %3963, %3956 ], [ %3943, %3934 ]
  %3970 = phi <8 x double> [ %3967, %3956 ], [ %3942, %3934 ]
  br i1 %3953, label %3971, label %3977

3971:                                             ; preds = %3968
  %3972 = fneg <8 x double> %3950
  %3973 = icmp eq <8 x i64> %3954, %3935
  %3974 = select <8 x i1> %3973, <8 x double> %3939, <8 x double> %3972
  %3975 = fsub <8 x double> splat (double 1.000000e+00), %3948
  %3976 = select <8 x i1> %3973, <8 x double> %3940, <8 x double> %3975
  br label %3977

3977:                                             ; preds = %3971, %3968
  %3978 = phi <8 x double> [ %3976, %3971 ], [ %3940, %3968 ]
  %3979 = phi <8 x double> [ %3974, %3971 ], [ %3939, %3968 ]
  %3980 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3954)
  %3981 = icmp eq i64 %3980, 0
  br i1 %3981, label %4026, label %3982

3982:                                             ; preds = %3977
  %3983 = load ptr, ptr %3929, align 16, !tbaa !48, !noalias !163
  %3984 = getelementptr inbounds nuw <8 x double>, ptr %3983, i64 %3944
  %3985 = load <8 x double>, ptr %3984, align 64, !tbaa !26, !noalias !163
  %3986 = fmul <8 x double> %3900, %3985
  %3987 = load ptr, ptr %3930, align 16, !tbaa !47, !noalias !163
  %3988 = getelementptr inbounds nuw <8 x double>, ptr %3987, i64 %3944
  %3989 = load <8 x double>, ptr %3988, align 64, !tbaa !26, !noalias !163
  %3990 = load ptr, ptr %3931, align 8, !tbaa !65, !noalias !163
  %3991 = getelementptr inbounds nuw <8 x double>, ptr %3990, i64 %3944
  %3992 = load <8 x double>, ptr %3991, align 64, !tbaa !26, !noalias !163
  %3993 = fmul <8 x double> %3912, %3992
  %3994 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3906, <8 x double> %3989, <8 x double> %3993)
  %3995 = fmul <8 x double> %3985, %3994
  %3996 = icmp ne i64 %3936, 1
  %3997 = icmp eq i64 %3944, %3927
  %3998 = select i1 %3996, i1 %3997, i1 false
  br i1 %3998, label %3999, label %4004

3999:                                             ; preds = %3982
  %4000 = load <8 x double>, ptr %3932, align 64, !tbaa !26, !noalias !163
  %4001 = fadd <8 x double> %3986, %4000
  %4002 = load <8 x double>, ptr %3933, align 64, !tbaa !26, !noalias !163
  %4003 = fadd <8 x double> %3995, %4002
  br label %4004

4004:                                             ; preds = %3982, %3999
  %4005 = phi <8 x double> [ %4001, %3999 ], [ %3986, %3982 ]
  %4006 = phi <8 x double> [ %4003, %3999 ], [ %3995, %3982 ]
  %4007 = fneg <8 x double> %4006
  %4008 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4005, <8 x double> %3917, <8 x double> %4007)
  %4009 = icmp eq <8 x i64> %3954, zeroinitializer
  %4010 = select <8 x i1> %4009, <8 x double> zeroinitializer, <8 x double> %4008
  %4011 = fadd <8 x double> %3969, %4010
  %4012 = select <8 x i1> %4009, <8 x double> zeroinitializer, <8 x double> %4005
  %4013 = fadd <8 x double> %3970, %4012
  %4014 = fcmp olt <8 x double> %3937, %3950
  %4015 = select <8 x i1> %4009, <8 x i1> splat (i1 true), <8 x i1> %4014
  %4016 = select <8 x i1> %4015, <8 x double> %3937, <8 x double> %3950
  %4017 = fsub <8 x double> splat (double 1.000000e+00), %3948
  %4018 = fcmp ogt <8 x double> %3938, %4017
  %4019 = select <8 x i1> %4009, <8 x i1> splat (i1 true), <8 x i1> %4018
  %4020 = select <8 x i1> %4019, <8 x double> %3938, <8 x double> %4017
  %4021 = uitofp nneg i64 %3944 to double
  %4022 = insertelement <8 x double> poison, double %4021, i64 0
  %4023 = shufflevector <8 x double> %4022, <8 x double> poison, <8 x i32> zeroinitializer
  %4024 = select <8 x i1> %4009, <8 x double> %3941, <8 x double> %4023
  %4025 = icmp samesign ugt i64 %3936, 1
  br i1 %4025, label %3934, label %4026, !llvm.loop !154

4026:                                             ; preds = %4004, %3977, %3884
  %4027 = phi <8 x double> [ %3888, %3884 ], [ %3941, %3977 ], [ %4024, %4004 ]
  %4028 = phi <8 x double> [ zeroinitializer, %3884 ], [ %3938, %3977 ], [ %4020, %4004 ]
  %4029 = phi <8 x double> [ splat (double 1.000000e+18), %3884 ], [ %3937, %3977 ], [ %4016, %4004 ]
  %4030 = phi <8 x double> [ zeroinitializer, %3884 ], [ %3969, %3977 ], [ %4011, %4004 ]
  %4031 = phi <8 x double> [ zeroinitializer, %3884 ], [ %3970, %3977 ], [ %4013, %4004 ]
  %4032 = phi <8 x double> [ splat (double 1.000000e+00), %3884 ], [ %3978, %3977 ], [ %3978, %4004 ]
  %4033 = phi <8 x double> [ splat (double 1.000000e+18), %3884 ], [ %3979, %3977 ], [ %3979, %4004 ]
  %4034 = fmul <8 x double> %3914, %4031
  %4035 = fmul <8 x double> %3914, %4032
  %4036 = fdiv <8 x double> %4033, %4035
  %4037 = fsub <8 x double> %3120, %4036
  %4038 = fcmp ogt <8 x double> %4028, splat (double 1.000000e-09)
  %4039 = select <8 x i1> %4038, <8 x double> %4028, <8 x double> splat (double 1.000000e-09)
  %4040 = fmul <8 x double> %3914, %4039
  %4041 = fdiv <8 x double> %4029, %4040
  %4042 = fadd <8 x double> %3120, %4041
  %4043 = load <8 x double>, ptr %3871, align 64, !tbaa !26, !noalias !160
  %4044 = select <8 x i1> %3878, <8 x double> %4030, <8 x double> %4043
  store <8 x double> %4044, ptr %3871, align 64, !tbaa !26, !noalias !160
  %4045 = getelementptr inbounds nuw i8, ptr %3818, i64 8896
  %4046 = load <8 x double>, ptr %4045, align 64, !tbaa !26, !noalias !160
  %4047 = select <8 x i1> %3878, <8 x double> %4034, <8 x double> %4046
  store <8 x double> %4047, ptr %4045, align 64, !tbaa !26, !noalias !160
  %4048 = getelementptr inbounds nuw i8, ptr %3818, i64 8960
  %4049 = load <8 x double>, ptr %4048, align 64, !tbaa !26, !noalias !160
  %4050 = select <8 x i1> %3878, <8 x double> %4027, <8 x double> %4049
  store <8 x double> %4050, ptr %4048, align 64, !tbaa !26, !noalias !160
  %4051 = getelementptr inbounds nuw i8, ptr %3818, i64 9024
  %4052 = load <8 x double>, ptr %4051, align 64, !tbaa !26, !noalias !160
  %4053 = select <8 x i1> %3878, <8 x double> %3120, <8 x double> %4052
  store <8 x double> %4053, ptr %4051, align 64, !tbaa !26, !noalias !160
  %4054 = select <8 x i1> %3878, <8 x double> %4037, <8 x double> %3873
  store <8 x double> %4054, ptr %3872, align 64, !tbaa !26, !noalias !160
  %4055 = select <8 x i1> %3878, <8 x double> %4042, <8 x double> %3876
  store <8 x double> %4055, ptr %3875, align 64, !tbaa !26, !noalias !160
  br label %4056

4056:                                             ; preds = %3881, %4026
  %4057 = phi <8 x double> [ %3883, %3881 ], [ %4050, %4026 ]
  %4058 = load i64, ptr %115, align 16, !tbaa !21, !noalias !157
  %4059 = sitofp i64 %4058 to double
  %4060 = insertelement <8 x double> poison, double %4059, i64 0
  %4061 = shufflevector <8 x double> %4060, <8 x double> poison, <8 x i32> zeroinitializer
  %4062 = fcmp olt <8 x double> %4057, %4061
  %4063 = and <8 x i1> %3825, %4062
  %4064 = bitcast <8 x i1> %4063 to i8
  %4065 = icmp eq i8 %4064, 0
  br i1 %4065, label %4127, label %4066

4066:                                             ; preds = %4056
  %4067 = getelementptr inbounds nuw i8, ptr %3818, i64 8896
  %4068 = load <8 x double>, ptr %4067, align 64, !tbaa !26, !noalias !160
  %4069 = getelementptr inbounds nuw i8, ptr %3818, i64 9024
  %4070 = load <8 x double>, ptr %4069, align 64, !tbaa !26, !noalias !160
  %4071 = fsub <8 x double> %3120, %4070
  %4072 = load <8 x double>, ptr %3871, align 64, !tbaa !26, !noalias !160
  %4073 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4068, <8 x double> %4071, <8 x double> %4072)
  %4074 = getelementptr inbounds nuw i8, ptr %3818, i64 7488
  %4075 = load <8 x double>, ptr %4074, align 64, !tbaa !26, !noalias !157
  %4076 = getelementptr inbounds nuw i8, ptr %3818, i64 6336
  %4077 = load <8 x double>, ptr %4076, align 64, !tbaa !26, !noalias !157
  %4078 = getelementptr inbounds nuw i8, ptr %3818, i64 8384
  %4079 = load <8 x double>, ptr %4078, align 64, !tbaa !26, !noalias !157
  %4080 = fneg <8 x double> %4079
  %4081 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4075, <8 x double> %4077, <8 x double> %4080)
  %4082 = getelementptr inbounds nuw i8, ptr %3818, i64 8320
  %4083 = load <8 x double>, ptr %4082, align 64, !tbaa !26, !noalias !157
  %4084 = fadd <8 x double> %4075, %4083
  %4085 = getelementptr inbounds nuw i8, ptr %3818, i64 9280
  %4086 = load <8 x i64>, ptr %4085, align 64, !tbaa !26, !noalias !157
  %4087 = getelementptr inbounds nuw i8, ptr %3818, i64 9672
  %4088 = load ptr, ptr %4087, align 8, !tbaa !130, !noalias !157
  %4089 = load <8 x double>, ptr %4088, align 64, !tbaa !26, !noalias !157
  %4090 = fmul <8 x double> %4075, %4089
  %4091 = icmp eq <8 x i64> %4086, zeroinitializer
  %4092 = select <8 x i1> %4091, <8 x double> %4081, <8 x double> %4090
  %4093 = getelementptr inbounds nuw i8, ptr %3818, i64 9680
  %4094 = load ptr, ptr %4093, align 16, !tbaa !131, !noalias !157
  %4095 = load <8 x double>, ptr %4094, align 64, !tbaa !26, !noalias !157
  %4096 = fsub <8 x double> splat (double 1.000000e+00), %4095
  %4097 = fmul <8 x double> %4075, %4096
  %4098 = select <8 x i1> %4091, <8 x double> %4084, <8 x double> %4097
  %4099 = fneg <8 x double> %4098
  %4100 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4099, <8 x double> %3120, <8 x double> %4092)
  %4101 = fcmp ogt <8 x double> %4073, zeroinitializer
  %4102 = fcmp oge <8 x double> %4100, zeroinitializer
  %4103 = and <8 x i1> %4101, %4102
  %4104 = and <8 x i1> %4063, %4103
  %4105 = sext <8 x i1> %4104 to <8 x i64>
  %4106 = xor <8 x i64> %4105, splat (i64 -1)
  %4107 = fadd <8 x double> %4073, %4100
  %4108 = fcmp ogt <8 x double> %4107, zeroinitializer
  %4109 = and <8 x i1> %4063, %4108
  %4110 = select <8 x i1> %4109, <8 x i64> %4106, <8 x i64> zeroinitializer
  %4111 = or <8 x i64> %4110, %4105
  %4112 = fmul <8 x double> %3813, %4100
  %4113 = select <8 x i1> %4104, <8 x double> %4112, <8 x double> zeroinitializer
  %4114 = icmp eq <8 x i64> %4111, zeroinitializer
  %4115 = select <8 x i1> %4114, <8 x double> %3862, <8 x double> %4113
  store <8 x double> %4115, ptr %3863, align 64, !tbaa !26, !noalias !157
  %4116 = select <8 x i1> %4114, <8 x double> %3861, <8 x double> %3120
  store <8 x double> %4116, ptr %3864, align 64, !tbaa !26, !noalias !157
  %4117 = fmul <8 x double> %3813, %4073
  %4118 = fmul <8 x double> %3813, %4107
  %4119 = icmp eq <8 x i64> %4110, zeroinitializer
  %4120 = select <8 x i1> %4119, <8 x double> zeroinitializer, <8 x double> %4118
  %4121 = select <8 x i1> %4104, <8 x double> %4117, <8 x double> %4120
  store <8 x double> %4121, ptr %3865, align 64, !tbaa !26, !noalias !157
  %4122 = load i64, ptr %115, align 16, !tbaa !21, !noalias !157
  %4123 = sitofp i64 %4122 to double
  %4124 = insertelement <8 x double> poison, double %4123, i64 0
  %4125 = shufflevector <8 x double> %4124, <8 x double> poison, <8 x i32> zeroinitializer
  %4126 = select <8 x i1> %4114, <8 x double> %4125, <8 x double> %4057
  store <8 x double> %4126, ptr %3870, align 64, !tbaa !26, !noalias !157
  br label %4127

4127:                                             ; preds = %4056, %4066
  %4128 = add nuw nsw i64 %3816, 1
  %4129 = load i64, ptr %153, align 8, !tbaa !20, !noalias !157
  %4130 = icmp slt i64 %4128, %4129
  br i1 %4130, label %3815, label %4131, !llvm.loop !155

4131:                                             ; preds = %4127, %3793
  %4132 = phi i64 [ %3276, %3793 ], [ %4129, %4127 ]
  %4133 = icmp sgt i64 %4132, 0
  br i1 %4133, label %4296, label %4134

4134:                                             ; preds = %4131, %3810
  %4135 = load <8 x double>, ptr %162, align 64, !tbaa !26
  br label %4141

4136:                                             ; preds = %4373
  %4137 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %4138 = icmp sgt i64 %4397, 0
  br i1 %4138, label %4139, label %4141

4139:                                             ; preds = %4136
  %4140 = load ptr, ptr %126, align 8, !tbaa !28
  br label %4274

4141:                                             ; preds = %4274, %4134, %4136
  %4142 = phi <8 x double> [ %4137, %4136 ], [ %4135, %4134 ], [ %4137, %4274 ]
  %4143 = phi <8 x double> [ zeroinitializer, %4136 ], [ zeroinitializer, %4134 ], [ %4293, %4274 ]
  %4144 = phi <8 x double> [ zeroinitializer, %4136 ], [ zeroinitializer, %4134 ], [ %4288, %4274 ]
  %4145 = extractelement <8 x double> %4144, i64 0
  %4146 = extractelement <8 x double> %4144, i64 1
  %4147 = fadd double %4145, %4146
  %4148 = extractelement <8 x double> %4144, i64 2
  %4149 = fadd double %4147, %4148
  %4150 = extractelement <8 x double> %4144, i64 3
  %4151 = fadd double %4149, %4150
  %4152 = extractelement <8 x double> %4144, i64 4
  %4153 = fadd double %4151, %4152
  %4154 = extractelement <8 x double> %4144, i64 5
  %4155 = fadd double %4153, %4154
  %4156 = extractelement <8 x double> %4144, i64 6
  %4157 = fadd double %4155, %4156
  %4158 = extractelement <8 x double> %4144, i64 7
  %4159 = fadd double %4157, %4158
  %4160 = insertelement <8 x double> poison, double %4159, i64 0
  %4161 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %4162 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4163 = fsub <8 x double> %4142, %4162
  %4164 = extractelement <8 x double> %4143, i64 0
  %4165 = extractelement <8 x double> %4143, i64 1
  %4166 = fadd double %4164, %4165
  %4167 = extractelement <8 x double> %4143, i64 2
  %4168 = fadd double %4166, %4167
  %4169 = extractelement <8 x double> %4143, i64 3
  %4170 = fadd double %4168, %4169
  %4171 = extractelement <8 x double> %4143, i64 4
  %4172 = fadd double %4170, %4171
  %4173 = extractelement <8 x double> %4143, i64 5
  %4174 = fadd double %4172, %4173
  %4175 = extractelement <8 x double> %4143, i64 6
  %4176 = fadd double %4174, %4175
  %4177 = extractelement <8 x double> %4143, i64 7
  %4178 = fadd double %4176, %4177
  %4179 = shufflevector <8 x double> %4160, <8 x double> poison, <8 x i32> zeroinitializer
  %4180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4161, <8 x double> %4163, <8 x double> %4179)
  %4181 = insertelement <8 x double> poison, double %4178, i64 0
  %4182 = shufflevector <8 x double> %4181, <8 x double> poison, <8 x i32> zeroinitializer
  %4183 = fadd <8 x double> %4161, %4182
  store <8 x double> %4180, ptr %199, align 64, !tbaa !26
  %4184 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %4185 = fcmp ule <8 x double> %4184, zeroinitializer
  %4186 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %4187 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4184, <8 x double> splat (double 5.000000e-01), <8 x double> %4186)
  %4188 = fsub <8 x double> %4187, %4142
  %4189 = fcmp ogt <8 x double> %4184, splat (double 1.000000e-30)
  %4190 = select <8 x i1> %4189, <8 x double> %4184, <8 x double> splat (double 1.000000e-30)
  %4191 = fdiv <8 x double> %4188, %4190
  %4192 = fcmp ogt <8 x double> %4191, zeroinitializer
  %4193 = select <8 x i1> %4192, <8 x double> %4191, <8 x double> zeroinitializer
  %4194 = fcmp olt <8 x double> %4193, splat (double 1.000000e+00)
  %4195 = select <8 x i1> %4194, <8 x double> %4193, <8 x double> splat (double 1.000000e+00)
  %4196 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %4197 = load <8 x i64>, ptr %140, align 64, !tbaa !26
  %4198 = icmp eq <8 x i64> %4197, zeroinitializer
  %4199 = select <8 x i1> %4198, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4200 = select <8 x i1> %4185, <8 x double> %4199, <8 x double> %4195
  %4201 = fmul <8 x double> %4196, %4200
  %4202 = fcmp ule <8 x double> %4201, zeroinitializer
  %4203 = fcmp uge <8 x double> %4201, %4196
  %4204 = or <8 x i1> %4202, %4203
  %4205 = or <8 x i1> %4185, %4204
  %4206 = fdiv <8 x double> %4196, %4190
  %4207 = select <8 x i1> %4205, <8 x double> zeroinitializer, <8 x double> %4206
  %4208 = fadd <8 x double> %4183, %4207
  %4209 = load <8 x i64>, ptr %150, align 64, !tbaa !26
  %4210 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %4211 = fdiv <8 x double> splat (double 2.000000e+00), %4210
  %4212 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4213 = icmp eq <8 x i64> %4209, zeroinitializer
  %4214 = select <8 x i1> %4213, <8 x double> %4212, <8 x double> %4211
  %4215 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %4216 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %4217 = fmul <8 x double> %4215, %4216
  %4218 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %4219 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4220 = fmul <8 x double> %4219, splat (double 5.000000e-01)
  %4221 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4220, <8 x double> %4215, <8 x double> %4218)
  %4222 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4223 = fmul <8 x double> %4215, %4222
  %4224 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4217, <8 x double> %4221, <8 x double> %4223)
  %4225 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4226 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4227 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4228 = fmul <8 x double> %4216, %4227
  %4229 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4220, <8 x double> %4227, <8 x double> %4218)
  %4230 = fmul <8 x double> %4222, %4227
  %4231 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4228, <8 x double> %4229, <8 x double> %4230)
  %4232 = fmul <8 x double> %4226, %4231
  %4233 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4225, <8 x double> %4224, <8 x double> %4232)
  %4234 = fmul <8 x double> %4142, %4216
  %4235 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4220, <8 x double> %4142, <8 x double> %4218)
  %4236 = fmul <8 x double> %4142, %4222
  %4237 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4234, <8 x double> %4235, <8 x double> %4236)
  %4238 = fneg <8 x double> %4214
  %4239 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4240 = fneg <8 x double> %4239
  %4241 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4238, <8 x double> %4224, <8 x double> %4240)
  %4242 = select <8 x i1> %4213, <8 x double> %4233, <8 x double> %4241
  %4243 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4214, <8 x double> %4237, <8 x double> %4242)
  %4244 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4219, <8 x double> %4142, <8 x double> %4218)
  %4245 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4216, <8 x double> %4244, <8 x double> %4222)
  %4246 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %4247 = fcmp une <8 x double> %4246, zeroinitializer
  %4248 = fadd <8 x double> %4180, %4243
  %4249 = fsub <8 x double> %4248, %4201
  %4250 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4214, <8 x double> %4245, <8 x double> %4208)
  %4251 = fdiv <8 x double> %4249, %4250
  %4252 = fsub <8 x double> %4142, %4251
  %4253 = select <8 x i1> %4247, <8 x double> %4142, <8 x double> %4252
  store <8 x double> %4253, ptr %162, align 64, !tbaa !26
  %4254 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %4255 = fneg <8 x double> %4225
  %4256 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4255, <8 x double> %4254, <8 x double> %4201)
  %4257 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %4258 = fneg <8 x double> %4226
  %4259 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4258, <8 x double> %4257, <8 x double> %4256)
  %4260 = fdiv <8 x double> %4259, %4212
  %4261 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %4262 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4255, <8 x double> %4261, <8 x double> %4180)
  %4263 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %4264 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4258, <8 x double> %4263, <8 x double> %4262)
  %4265 = fdiv <8 x double> %4264, %4212
  %4266 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4201, <8 x double> %4210, <8 x double> %4254)
  %4267 = select <8 x i1> %4213, <8 x double> %4260, <8 x double> %4266
  %4268 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %4269 = select <8 x i1> %4247, <8 x double> %4268, <8 x double> %4267
  store <8 x double> %4269, ptr %204, align 64, !tbaa !26
  %4270 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %4271 = select <8 x i1> %4247, <8 x double> %4270, <8 x double> %4265
  store <8 x double> %4271, ptr %205, align 64, !tbaa !26
  %4272 = load i64, ptr %153, align 8, !tbaa !20
  %4273 = icmp sgt i64 %4272, 0
  br i1 %4273, label %4399, label %4686

4274:                                             ; preds = %4139, %4274
  %4275 = phi <8 x double> [ zeroinitializer, %4139 ], [ %4288, %4274 ]
  %4276 = phi <8 x double> [ zeroinitializer, %4139 ], [ %4293, %4274 ]
  %4277 = phi i64 [ 0, %4139 ], [ %4294, %4274 ]
  %4278 = getelementptr inbounds nuw %struct.Piece, ptr %4140, i64 %4277
  %4279 = getelementptr inbounds nuw i8, ptr %4278, i64 9408
  %4280 = load <8 x i64>, ptr %4279, align 64, !tbaa !26
  %4281 = getelementptr inbounds nuw i8, ptr %4278, i64 128
  %4282 = load <8 x double>, ptr %4281, align 64, !tbaa !26
  %4283 = getelementptr inbounds nuw i8, ptr %4278, i64 7680
  %4284 = load <8 x double>, ptr %4283, align 64, !tbaa !26
  %4285 = fmul <8 x double> %4282, %4284
  %4286 = icmp eq <8 x i64> %4280, zeroinitializer
  %4287 = select <8 x i1> %4286, <8 x double> %4285, <8 x double> zeroinitializer
  %4288 = fadd <8 x double> %4275, %4287
  %4289 = getelementptr inbounds nuw i8, ptr %4278, i64 7552
  %4290 = load <8 x double>, ptr %4289, align 64, !tbaa !26
  %4291 = fmul <8 x double> %4282, %4290
  %4292 = select <8 x i1> %4286, <8 x double> %4291, <8 x double> zeroinitializer
  %4293 = fadd <8 x double> %4276, %4292
  %4294 = add nuw nsw i64 %4277, 1
  %4295 = icmp eq i64 %4294, %4397
  br i1 %4295, label %4141, label %4274, !llvm.loop !169

4296:                                             ; preds = %4131, %4373
  %4297 = phi i64 [ %4396, %4373 ], [ 0, %4131 ]
  %4298 = load ptr, ptr %126, align 8, !tbaa !28
  %4299 = getelementptr inbounds nuw %struct.Piece, ptr %4298, i64 %4297
  %4300 = getelementptr inbounds nuw i8, ptr %4299, i64 6400
  %4301 = load <8 x double>, ptr %4300, align 64, !tbaa !26
  %4302 = getelementptr inbounds nuw i8, ptr %4299, i64 6592
  %4303 = load <8 x double>, ptr %4302, align 64, !tbaa !26
  %4304 = getelementptr inbounds nuw i8, ptr %4299, i64 9584
  %4305 = load ptr, ptr %4304, align 16, !tbaa !88
  %4306 = getelementptr inbounds nuw i8, ptr %4299, i64 9592
  %4307 = load ptr, ptr %4306, align 8, !tbaa !89
  %4308 = getelementptr inbounds nuw i8, ptr %4299, i64 6784
  %4309 = load <8 x double>, ptr %4308, align 64, !tbaa !26
  %4310 = getelementptr inbounds nuw i8, ptr %4299, i64 6848
  %4311 = load <8 x double>, ptr %4310, align 64, !tbaa !26
  %4312 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4309, <8 x double> %4301, <8 x double> %4311)
  %4313 = getelementptr inbounds nuw i8, ptr %4299, i64 9544
  %4314 = load ptr, ptr %4313, align 8, !tbaa !86
  %4315 = load i64, ptr %115, align 16, !tbaa !21
  %4316 = icmp sgt i64 %4315, 0
  br i1 %4316, label %4332, label %4317

4317:                                             ; preds = %4332, %4296
  %4318 = getelementptr inbounds nuw i8, ptr %4299, i64 9280
  %4319 = load <8 x i64>, ptr %4318, align 64, !tbaa !26
  %4320 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4319)
  %4321 = icmp eq i64 %4320, 0
  %4322 = load i64, ptr %116, align 8, !tbaa !22
  %4323 = icmp sgt i64 %4322, 0
  br i1 %4321, label %4329, label %4324

4324:                                             ; preds = %4317
  br i1 %4323, label %4325, label %4373

4325:                                             ; preds = %4324
  %4326 = getelementptr inbounds nuw i8, ptr %4299, i64 9672
  %4327 = getelementptr inbounds nuw i8, ptr %4299, i64 9680
  %4328 = getelementptr inbounds nuw i8, ptr %4299, i64 9640
  br label %4348

4329:                                             ; preds = %4317
  br i1 %4323, label %4330, label %4373

4330:                                             ; preds = %4329
  %4331 = getelementptr inbounds nuw i8, ptr %4299, i64 9640
  br label %4366

4332:                                             ; preds = %4296, %4332
  %4333 = phi <8 x double> [ %4345, %4332 ], [ %4312, %4296 ]
  %4334 = phi i64 [ %4335, %4332 ], [ %4315, %4296 ]
  %4335 = add nsw i64 %4334, -1
  %4336 = uitofp nneg i64 %4335 to double
  %4337 = insertelement <8 x double> poison, double %4336, i64 0
  %4338 = shufflevector <8 x double> %4337, <8 x double> poison, <8 x i32> zeroinitializer
  %4339 = fcmp ugt <8 x double> %4303, %4338
  %4340 = getelementptr inbounds nuw <8 x double>, ptr %4305, i64 %4335
  %4341 = load <8 x double>, ptr %4340, align 64, !tbaa !26
  %4342 = getelementptr inbounds nuw <8 x double>, ptr %4307, i64 %4335
  %4343 = load <8 x double>, ptr %4342, align 64, !tbaa !26
  %4344 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4343, <8 x double> %4333, <8 x double> %4341)
  %4345 = select <8 x i1> %4339, <8 x double> %4344, <8 x double> %4312
  %4346 = getelementptr inbounds nuw <8 x double>, ptr %4314, i64 %4335
  store <8 x double> %4345, ptr %4346, align 64, !tbaa !26
  %4347 = icmp samesign ugt i64 %4334, 1
  br i1 %4347, label %4332, label %4317, !llvm.loop !170

4348:                                             ; preds = %4325, %4348
  %4349 = phi i64 [ 0, %4325 ], [ %4363, %4348 ]
  %4350 = phi <8 x double> [ %4301, %4325 ], [ %4360, %4348 ]
  %4351 = load <8 x i64>, ptr %4318, align 64, !tbaa !26
  %4352 = load ptr, ptr %4326, align 8, !tbaa !130
  %4353 = getelementptr inbounds nuw <8 x double>, ptr %4352, i64 %4349
  %4354 = load <8 x double>, ptr %4353, align 64, !tbaa !26
  %4355 = load ptr, ptr %4327, align 16, !tbaa !131
  %4356 = getelementptr inbounds nuw <8 x double>, ptr %4355, i64 %4349
  %4357 = load <8 x double>, ptr %4356, align 64, !tbaa !26
  %4358 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4357, <8 x double> %4350, <8 x double> %4354)
  %4359 = icmp eq <8 x i64> %4351, zeroinitializer
  %4360 = select <8 x i1> %4359, <8 x double> %4301, <8 x double> %4358
  %4361 = load ptr, ptr %4328, align 8, !tbaa !171
  %4362 = getelementptr inbounds nuw <8 x double>, ptr %4361, i64 %4349
  store <8 x double> %4360, ptr %4362, align 64, !tbaa !26
  %4363 = add nuw nsw i64 %4349, 1
  %4364 = load i64, ptr %116, align 8, !tbaa !22
  %4365 = icmp slt i64 %4363, %4364
  br i1 %4365, label %4348, label %4373, !llvm.loop !172

4366:                                             ; preds = %4330, %4366
  %4367 = phi i64 [ 0, %4330 ], [ %4370, %4366 ]
  %4368 = load ptr, ptr %4331, align 8, !tbaa !171
  %4369 = getelementptr inbounds nuw <8 x double>, ptr %4368, i64 %4367
  store <8 x double> %4301, ptr %4369, align 64, !tbaa !26
  %4370 = add nuw nsw i64 %4367, 1
  %4371 = load i64, ptr %116, align 8, !tbaa !22
  %4372 = icmp slt i64 %4370, %4371
  br i1 %4372, label %4366, label %4373, !llvm.loop !173

4373:                                             ; preds = %4348, %4366, %4324, %4329
  %4374 = phi <8 x double> [ %4301, %4329 ], [ %4301, %4324 ], [ %4301, %4366 ], [ %4360, %4348 ]
  %4375 = load <8 x i64>, ptr %4318, align 64, !tbaa !26
  %4376 = getelementptr inbounds nuw i8, ptr %4299, i64 7616
  %4377 = load <8 x double>, ptr %4376, align 64, !tbaa !26
  %4378 = icmp eq <8 x i64> %4375, zeroinitializer
  %4379 = select <8 x i1> %4378, <8 x double> zeroinitializer, <8 x double> %4377
  %4380 = fsub <8 x double> splat (double 1.000000e+00), %4379
  %4381 = getelementptr inbounds nuw i8, ptr %4299, i64 6336
  %4382 = load <8 x double>, ptr %4381, align 64, !tbaa !26
  %4383 = fmul <8 x double> %4379, %4382
  %4384 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4380, <8 x double> %4374, <8 x double> %4383)
  %4385 = getelementptr inbounds nuw i8, ptr %4299, i64 7808
  store <8 x double> %4384, ptr %4385, align 64, !tbaa !26
  %4386 = getelementptr inbounds nuw i8, ptr %4299, i64 7552
  %4387 = load <8 x double>, ptr %4386, align 64, !tbaa !26
  %4388 = fsub <8 x double> %4382, %4374
  %4389 = fmul <8 x double> %4388, %4387
  %4390 = getelementptr inbounds nuw i8, ptr %4299, i64 7680
  store <8 x double> %4389, ptr %4390, align 64, !tbaa !26
  %4391 = getelementptr inbounds nuw i8, ptr %4299, i64 3584
  %4392 = load <8 x double>, ptr %4391, align 64, !tbaa !26
  %4393 = fdiv <8 x double> %4389, %4392
  %4394 = fsub <8 x double> %4382, %4393
  %4395 = getelementptr inbounds nuw i8, ptr %4299, i64 7744
  store <8 x double> %4394, ptr %4395, align 64, !tbaa !26
  %4396 = add nuw nsw i64 %4297, 1
  %4397 = load i64, ptr %153, align 8, !tbaa !20
  %4398 = icmp slt i64 %4396, %4397
  br i1 %4398, label %4296, label %4136, !llvm.loop !174

4399:                                             ; preds = %4141, %4620
  %4400 = phi i64 [ %4683, %4620 ], [ 0, %4141 ]
  %4401 = phi <8 x double> [ %4682, %4620 ], [ zeroinitializer, %4141 ]
  %4402 = load ptr, ptr %126, align 8, !tbaa !28
  %4403 = getelementptr inbounds nuw %struct.Piece, ptr %4402, i64 %4400
  %4404 = getelementptr inbounds nuw i8, ptr %4403, i64 6464
  %4405 = load <8 x double>, ptr %4404, align 64, !tbaa !26
  %4406 = getelementptr inbounds nuw i8, ptr %4403, i64 6528
  %4407 = load <8 x double>, ptr %4406, align 64, !tbaa !26
  %4408 = fadd <8 x double> %4405, %4407
  %4409 = getelementptr inbounds nuw i8, ptr %4403, i64 6400
  %4410 = load <8 x double>, ptr %4409, align 64, !tbaa !26
  %4411 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4412 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4411, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %4413 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4411, <8 x double> %4412, <8 x double> splat (double 0x4142F8368A3D70A4))
  %4414 = getelementptr inbounds nuw i8, ptr %4403, i64 8128
  %4415 = load <8 x double>, ptr %4414, align 64, !tbaa !26
  %4416 = getelementptr inbounds nuw i8, ptr %4403, i64 1664
  %4417 = load <8 x double>, ptr %4416, align 64, !tbaa !26
  %4418 = fmul <8 x double> %4415, %4417
  %4419 = getelementptr inbounds nuw i8, ptr %4403, i64 7808
  %4420 = load <8 x double>, ptr %4419, align 64, !tbaa !26
  %4421 = fsub <8 x double> %4420, %4410
  %4422 = fmul <8 x double> %4418, %4421
  %4423 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4413, <8 x double> %4408, <8 x double> %4422)
  %4424 = getelementptr inbounds nuw i8, ptr %4403, i64 6080
  %4425 = load <8 x double>, ptr %4424, align 64, !tbaa !26, !noalias !175
  %4426 = getelementptr inbounds nuw i8, ptr %4403, i64 4544
  %4427 = load <8 x double>, ptr %4426, align 64, !tbaa !26, !noalias !175
  %4428 = fneg <8 x double> %4425
  %4429 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4428, <8 x double> %4427, <8 x double> %4408)
  %4430 = getelementptr inbounds nuw i8, ptr %4403, i64 6144
  %4431 = load <8 x double>, ptr %4430, align 64, !tbaa !26, !noalias !175
  %4432 = getelementptr inbounds nuw i8, ptr %4403, i64 5440
  %4433 = load <8 x double>, ptr %4432, align 64, !tbaa !26, !noalias !175
  %4434 = fneg <8 x double> %4431
  %4435 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4434, <8 x double> %4433, <8 x double> %4429)
  %4436 = getelementptr inbounds nuw i8, ptr %4403, i64 6208
  %4437 = load <8 x double>, ptr %4436, align 64, !tbaa !26, !noalias !175
  %4438 = fmul <8 x double> %4435, %4437
  %4439 = getelementptr inbounds nuw i8, ptr %4403, i64 1984
  %4440 = load <8 x double>, ptr %4439, align 64, !tbaa !26, !noalias !175
  %4441 = fsub <8 x double> %4440, %4438
  %4442 = getelementptr inbounds nuw i8, ptr %4403, i64 4416
  %4443 = load <8 x double>, ptr %4442, align 64, !tbaa !26, !noalias !175
  %4444 = getelementptr inbounds nuw i8, ptr %4403, i64 8448
  %4445 = load <8 x double>, ptr %4444, align 64, !tbaa !26, !noalias !175
  %4446 = fsub <8 x double> %4443, %4445
  %4447 = getelementptr inbounds nuw i8, ptr %4403, i64 4288
  %4448 = load <8 x double>, ptr %4447, align 64, !tbaa !26, !noalias !175
  %4449 = getelementptr inbounds nuw i8, ptr %4403, i64 3328
  %4450 = load <8 x double>, ptr %4449, align 64, !tbaa !26, !noalias !175
  %4451 = getelementptr inbounds nuw i8, ptr %4403, i64 9280
  %4452 = load <8 x i64>, ptr %4451, align 64, !tbaa !26, !noalias !175
  %4453 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4452)
  %4454 = icmp eq i64 %4453, 0
  br i1 %4454, label %4588, label %4455

4455:                                             ; preds = %4399
  %4456 = fcmp ogt <8 x double> %4446, %4441
  %4457 = getelementptr inbounds nuw i8, ptr %4403, i64 8576
  %4458 = load <8 x double>, ptr %4457, align 64, !tbaa !26, !noalias !175
  %4459 = fcmp oeq <8 x double> %4458, zeroinitializer
  %4460 = select <8 x i1> %4459, <8 x i1> %4456, <8 x i1> zeroinitializer
  %4461 = select <8 x i1> %4460, <8 x i64> %4452, <8 x i64> zeroinitializer
  %4462 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4461)
  %4463 = icmp eq i64 %4462, 0
  br i1 %4463, label %4536, label %4464

4464:                                             ; preds = %4455
  %4465 = fsub <8 x double> %4446, %4441
  %4466 = getelementptr inbounds nuw i8, ptr %4403, i64 8768
  %4467 = load <8 x double>, ptr %4466, align 64, !tbaa !26, !noalias !175
  %4468 = fmul <8 x double> %4465, %4467
  %4469 = getelementptr inbounds nuw i8, ptr %4403, i64 9568
  %4470 = load ptr, ptr %4469, align 32, !tbaa !66, !noalias !175
  %4471 = load i64, ptr %115, align 16, !tbaa !21, !noalias !175
  %4472 = add nsw i64 %4471, -1
  %4473 = getelementptr inbounds <8 x double>, ptr %4470, i64 %4472
  %4474 = load <8 x double>, ptr %4473, align 64, !tbaa !26, !noalias !175
  %4475 = icmp sgt i64 %4471, 1
  br i1 %4475, label %4476, label %4528

4476:                                             ; preds = %4464
  %4477 = getelementptr inbounds nuw i8, ptr %4403, i64 9472
  %4478 = load i64, ptr %4477, align 64, !tbaa !31, !noalias !175
  %4479 = getelementptr inbounds nuw i8, ptr %4403, i64 5056
  %4480 = getelementptr inbounds nuw i8, ptr %4403, i64 1920
  %4481 = getelementptr inbounds nuw i8, ptr %4403, i64 9608
  br label %4482

4482:                                             ; preds = %4476, %4525
  %4483 = phi <8 x double> [ %4448, %4476 ], [ %4520, %4525 ]
  %4484 = phi i64 [ %4472, %4476 ], [ %4526, %4525 ]
  %4485 = phi <8 x double> [ %4474, %4476 ], [ %4508, %4525 ]
  %4486 = phi <8 x i64> [ %4461, %4476 ], [ %4512, %4525 ]
  %4487 = phi <8 x double> [ %4468, %4476 ], [ %4519, %4525 ]
  %4488 = icmp slt i64 %4484, %4478
  br i1 %4488, label %4489, label %4495

4489:                                             ; preds = %4482
  %4490 = load ptr, ptr %4481, align 8, !tbaa !76, !noalias !175
  %4491 = getelementptr inbounds nuw <8 x double>, ptr %4490, i64 %4484
  %4492 = load <8 x double>, ptr %4491, align 64, !tbaa !26, !noalias !175
  %4493 = load <8 x double>, ptr %4480, align 64, !tbaa !26, !noalias !175
  %4494 = fmul <8 x double> %4492, %4493
  br label %4503

4495:                                             ; preds = %4482
  %4496 = load <8 x double>, ptr %4479, align 64, !tbaa !26, !noalias !175
  %4497 = load <8 x double>, ptr %4480, align 64, !tbaa !26, !noalias !175
  %4498 = load ptr, ptr %4481, align 8, !tbaa !76, !noalias !175
  %4499 = getelementptr inbounds nuw <8 x double>, ptr %4498, i64 %4484
  %4500 = load <8 x double>, ptr %4499, align 64, !tbaa !26, !noalias !175
  %4501 = fsub <8 x double> %4496, %4497
  %4502 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4500, <8 x double> %4501, <8 x double> %4497)
  br label %4503

4503:                                             ; preds = %4495, %4489
  %4504 = phi <8 x double> [ %4494, %4489 ], [ %4502, %4495 ]
  %4505 = getelementptr inbounds nuw <8 x double>, ptr %4470, i64 %4484
  %4506 = load <8 x double>, ptr %4505, align 64, !tbaa !26, !noalias !175
  %4507 = icmp eq <8 x i64> %4486, zeroinitializer
  %4508 = select <8 x i1> %4507, <8 x double> %4485, <8 x double> %4506
  %4509 = fsub <8 x double> %4483, %4504
  %4510 = fmul <8 x double> %4509, %4508
  %4511 = fcmp olt <8 x double> %4510, %4487
  %4512 = select <8 x i1> %4511, <8 x i64> %4486, <8 x i64> zeroinitializer
  %4513 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4512)
  %4514 = icmp eq i64 %4513, 0
  br i1 %4514, label %4528, label %4515

4515:                                             ; preds = %4503
  %4516 = fneg <8 x double> %4508
  %4517 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4516, <8 x double> %4509, <8 x double> %4487)
  %4518 = icmp eq <8 x i64> %4512, zeroinitializer
  %4519 = select <8 x i1> %4518, <8 x double> %4487, <8 x double> %4517
  %4520 = select <8 x i1> %4518, <8 x double> %4483, <8 x double> %4504
  %4521 = icmp eq i64 %4484, 1
  br i1 %4521, label %4522, label %4525

4522:                                             ; preds = %4515
  %4523 = load <8 x double>, ptr %4470, align 64, !tbaa !26, !noalias !175
  %4524 = select <8 x i1> %4518, <8 x double> %4508, <8 x double> %4523
  br label %4528

4525:                                             ; preds = %4515
  %4526 = add nsw i64 %4484, -1
  %4527 = icmp sgt i64 %4484, 1
  br i1 %4527, label %4482, label %4528, !llvm.loop !77

4528:                                             ; preds = %4525, %4503, %4522, %4464
  %4529 = phi <8 x double> [ %4468, %4464 ], [ %4519, %4522 ], [ %4487, %4503 ], [ %4519, %4525 ]
  %4530 = phi <8 x double> [ %4448, %4464 ], [ %4520, %4522 ], [ %4483, %4503 ], [ %4520, %4525 ]
  %4531 = phi <8 x double> [ %4474, %4464 ], [ %4524, %4522 ], [ %4508, %4503 ], [ %4508, %4525 ]
  %4532 = fdiv <8 x double> %4529, %4531
  %4533 = fsub <8 x double> %4530, %4532
  %4534 = icmp eq <8 x i64> %4461, zeroinitializer
  %4535 = select <8 x i1> %4534, <8 x double> %4448, <8 x double> %4533
  br label %4536

4536:                                             ; preds = %4528, %4455
  %4537 = phi <8 x double> [ %4535, %4528 ], [ %4448, %4455 ]
  %4538 = getelementptr inbounds nuw i8, ptr %4403, i64 3008
  %4539 = load <8 x double>, ptr %4538, align 64, !tbaa !26, !noalias !175
  %4540 = getelementptr inbounds nuw i8, ptr %4403, i64 3072
  %4541 = load <8 x double>, ptr %4540, align 64, !tbaa !26, !noalias !175
  %4542 = getelementptr inbounds nuw i8, ptr %4403, i64 3136
  %4543 = load <8 x double>, ptr %4542, align 64, !tbaa !26, !noalias !175
  %4544 = getelementptr inbounds nuw i8, ptr %4403, i64 2944
  %4545 = load <8 x double>, ptr %4544, align 64, !tbaa !26, !noalias !175
  %4546 = load <8 x double>, ptr %4403, align 64, !tbaa !26, !noalias !175
  %4547 = fmul <8 x double> %4546, splat (double 5.000000e-04)
  br label %4548

4548:                                             ; preds = %4536, %4548
  %4549 = phi <8 x i64> [ splat (i64 -1), %4536 ], [ %4571, %4548 ]
  %4550 = phi i32 [ 0, %4536 ], [ %4572, %4548 ]
  %4551 = phi <8 x double> [ %4450, %4536 ], [ %4568, %4548 ]
  %4552 = fmul <8 x double> %4551, splat (double 3.000000e+00)
  %4553 = fmul <8 x double> %4552, %4543
  %4554 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4541, <8 x double> splat (double 2.000000e+00), <8 x double> %4553)
  %4555 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4551, <8 x double> %4554, <8 x double> %4539)
  %4556 = fdiv <8 x double> splat (double 1.000000e+00), %4555
  %4557 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4551, <8 x double> %4543, <8 x double> %4541)
  %4558 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4551, <8 x double> %4557, <8 x double> %4539)
  %4559 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4551, <8 x double> %4558, <8 x double> %4545)
  %4560 = fsub <8 x double> %4559, %4537
  %4561 = fmul <8 x double> %4560, %4556
  %4562 = fmul <8 x double> %4561, %4561
  %4563 = fmul <8 x double> %4556, %4562
  %4564 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4552, <8 x double> %4543, <8 x double> %4541)
  %4565 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4563, <8 x double> %4564, <8 x double> %4561)
  %4566 = fsub <8 x double> %4551, %4565
  %4567 = icmp eq <8 x i64> %4549, zeroinitializer
  %4568 = select <8 x i1> %4567, <8 x double> %4551, <8 x double> %4566
  %4569 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4565)
  %4570 = fcmp oge <8 x double> %4569, %4547
  %4571 = select <8 x i1> %4570, <8 x i64> %4549, <8 x i64> zeroinitializer
  %4572 = add nuw nsw i32 %4550, 1
  %4573 = icmp samesign ult i32 %4550, 3
  %4574 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4571)
  %4575 = icmp ne i64 %4574, 0
  %4576 = select i1 %4573, i1 %4575, i1 false
  br i1 %4576, label %4548, label %4577, !llvm.loop !78

4577:                                             ; preds = %4548
  %4578 = fmul <8 x double> %4546, splat (double 2.800000e-01)
  %4579 = fcmp ogt <8 x double> %4568, %4578
  %4580 = select <8 x i1> %4579, <8 x double> %4568, <8 x double> %4578
  %4581 = fcmp olt <8 x double> %4580, %4546
  %4582 = select <8 x i1> %4581, <8 x double> %4580, <8 x double> %4546
  %4583 = icmp eq <8 x i64> %4452, zeroinitializer
  %4584 = select <8 x i1> %4583, <8 x double> %4450, <8 x double> %4582
  %4585 = fcmp olt <8 x double> %4446, %4441
  %4586 = select <8 x i1> %4583, <8 x i1> splat (i1 true), <8 x i1> %4585
  %4587 = select <8 x i1> %4586, <8 x double> %4446, <8 x double> %4441
  br label %4588

4588:                                             ; preds = %4577, %4399
  %4589 = phi <8 x double> [ %4587, %4577 ], [ %4446, %4399 ]
  %4590 = phi <8 x double> [ %4584, %4577 ], [ %4450, %4399 ]
  %4591 = phi <8 x double> [ %4537, %4577 ], [ %4448, %4399 ]
  %4592 = fsub <8 x double> %4441, %4589
  %4593 = fsub <8 x double> %4590, %4450
  %4594 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4593)
  %4595 = getelementptr inbounds nuw i8, ptr %4403, i64 3456
  %4596 = load <8 x double>, ptr %4595, align 64, !tbaa !26
  %4597 = fsub <8 x double> %4592, %4596
  %4598 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4597)
  %4599 = getelementptr inbounds nuw i8, ptr %4403, i64 8768
  %4600 = load <8 x double>, ptr %4599, align 64, !tbaa !26
  %4601 = fmul <8 x double> %4600, %4598
  %4602 = icmp eq <8 x i64> %4452, zeroinitializer
  %4603 = select <8 x i1> %4602, <8 x double> %4601, <8 x double> %4594
  br i1 %4454, label %4620, label %4604

4604:                                             ; preds = %4588
  %4605 = getelementptr inbounds nuw i8, ptr %4403, i64 8064
  %4606 = load <8 x double>, ptr %4605, align 64, !tbaa !26
  %4607 = fmul <8 x double> %4606, splat (double 2.000000e+00)
  %4608 = getelementptr inbounds nuw i8, ptr %4403, i64 6784
  %4609 = load <8 x double>, ptr %4608, align 64, !tbaa !26
  %4610 = getelementptr inbounds nuw i8, ptr %4403, i64 6848
  %4611 = load <8 x double>, ptr %4610, align 64, !tbaa !26
  %4612 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4609, <8 x double> %4410, <8 x double> %4611)
  %4613 = getelementptr inbounds nuw i8, ptr %4403, i64 1152
  %4614 = load <8 x double>, ptr %4613, align 64, !tbaa !26
  %4615 = fneg <8 x double> %4614
  %4616 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4615, <8 x double> %4410, <8 x double> %4612)
  %4617 = fmul <8 x double> %4607, %4616
  %4618 = fsub <8 x double> %4423, %4617
  %4619 = select <8 x i1> %4602, <8 x double> %4423, <8 x double> %4618
  br label %4620

4620:                                             ; preds = %4588, %4604
  %4621 = phi <8 x double> [ %4619, %4604 ], [ %4423, %4588 ]
  %4622 = getelementptr inbounds nuw i8, ptr %4403, i64 3648
  store <8 x double> %4438, ptr %4622, align 64, !tbaa !26
  store <8 x double> %4592, ptr %4595, align 64, !tbaa !26
  %4623 = getelementptr inbounds nuw i8, ptr %4403, i64 3520
  store <8 x double> %4589, ptr %4623, align 64, !tbaa !26
  %4624 = getelementptr inbounds nuw i8, ptr %4403, i64 3392
  %4625 = load <8 x double>, ptr %4624, align 64, !tbaa !26
  %4626 = select <8 x i1> %4602, <8 x double> %4625, <8 x double> %4591
  store <8 x double> %4626, ptr %4624, align 64, !tbaa !26
  %4627 = select <8 x i1> %4602, <8 x double> %4450, <8 x double> %4590
  store <8 x double> %4627, ptr %4449, align 64, !tbaa !26
  %4628 = getelementptr inbounds nuw i8, ptr %4403, i64 3904
  store <8 x double> %4407, ptr %4628, align 64, !tbaa !26
  %4629 = getelementptr inbounds nuw i8, ptr %4403, i64 3968
  store <8 x double> %4410, ptr %4629, align 64, !tbaa !26
  %4630 = getelementptr inbounds nuw i8, ptr %4403, i64 3584
  %4631 = load <8 x double>, ptr %4630, align 64, !tbaa !26
  %4632 = getelementptr inbounds nuw i8, ptr %4403, i64 6336
  %4633 = load <8 x double>, ptr %4632, align 64, !tbaa !26
  %4634 = fsub <8 x double> %4633, %4410
  %4635 = getelementptr inbounds nuw i8, ptr %4403, i64 9216
  %4636 = load <8 x double>, ptr %4635, align 64, !tbaa !26
  %4637 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4631, <8 x double> %4636, <8 x double> splat (double 1.000000e+00))
  %4638 = fdiv <8 x double> %4634, %4637
  %4639 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4410, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %4640 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4410, <8 x double> %4639, <8 x double> splat (double 0x4142F8368A3D70A4))
  %4641 = fneg <8 x double> %4405
  %4642 = fmul <8 x double> %4640, %4641
  %4643 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4631, <8 x double> %4638, <8 x double> %4642)
  %4644 = getelementptr inbounds nuw i8, ptr %4403, i64 3840
  store <8 x double> %4643, ptr %4644, align 64, !tbaa !26
  %4645 = getelementptr inbounds nuw i8, ptr %4403, i64 7744
  %4646 = load <8 x double>, ptr %4645, align 64, !tbaa !26
  %4647 = fsub <8 x double> %4633, %4646
  %4648 = fsub <8 x double> %4647, %4638
  %4649 = getelementptr inbounds nuw i8, ptr %4403, i64 4032
  store <8 x double> %4648, ptr %4649, align 64, !tbaa !26
  %4650 = getelementptr inbounds nuw i8, ptr %4403, i64 8320
  %4651 = load <8 x double>, ptr %4650, align 64, !tbaa !26
  %4652 = getelementptr inbounds nuw i8, ptr %4403, i64 8384
  %4653 = load <8 x double>, ptr %4652, align 64, !tbaa !26
  %4654 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4651, <8 x double> %4410, <8 x double> %4653)
  %4655 = getelementptr inbounds nuw i8, ptr %4403, i64 7680
  %4656 = load <8 x double>, ptr %4655, align 64, !tbaa !26
  %4657 = getelementptr inbounds nuw i8, ptr %4403, i64 4608
  %4658 = load <8 x double>, ptr %4657, align 64, !tbaa !26
  %4659 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4428, <8 x double> %4658, <8 x double> %4656)
  %4660 = getelementptr inbounds nuw i8, ptr %4403, i64 5504
  %4661 = load <8 x double>, ptr %4660, align 64, !tbaa !26
  %4662 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4434, <8 x double> %4661, <8 x double> %4659)
  %4663 = fmul <8 x double> %4437, %4662
  %4664 = getelementptr inbounds nuw i8, ptr %4403, i64 3712
  store <8 x double> %4663, ptr %4664, align 64, !tbaa !26
  %4665 = getelementptr inbounds nuw i8, ptr %4403, i64 4672
  %4666 = load <8 x double>, ptr %4665, align 64, !tbaa !26
  %4667 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4428, <8 x double> %4666, <8 x double> %4621)
  %4668 = getelementptr inbounds nuw i8, ptr %4403, i64 5568
  %4669 = load <8 x double>, ptr %4668, align 64, !tbaa !26
  %4670 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4434, <8 x double> %4669, <8 x double> %4667)
  %4671 = fmul <8 x double> %4437, %4670
  %4672 = getelementptr inbounds nuw i8, ptr %4403, i64 3776
  store <8 x double> %4671, ptr %4672, align 64, !tbaa !26
  %4673 = getelementptr inbounds nuw i8, ptr %4403, i64 4992
  %4674 = load <8 x double>, ptr %4673, align 64, !tbaa !26
  %4675 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4428, <8 x double> %4674, <8 x double> %4654)
  %4676 = getelementptr inbounds nuw i8, ptr %4403, i64 5888
  %4677 = load <8 x double>, ptr %4676, align 64, !tbaa !26
  %4678 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4434, <8 x double> %4677, <8 x double> %4675)
  %4679 = fmul <8 x double> %4437, %4678
  %4680 = getelementptr inbounds nuw i8, ptr %4403, i64 4096
  store <8 x double> %4679, ptr %4680, align 64, !tbaa !26
  %4681 = fcmp ogt <8 x double> %4401, %4603
  %4682 = select <8 x i1> %4681, <8 x double> %4401, <8 x double> %4603
  %4683 = add nuw nsw i64 %4400, 1
  %4684 = load i64, ptr %153, align 8, !tbaa !20
  %4685 = icmp slt i64 %4683, %4684
  br i1 %4685, label %4399, label %4686, !llvm.loop !178

4686:                                             ; preds = %4620, %4141
  %4687 = phi <8 x double> [ zeroinitializer, %4141 ], [ %4682, %4620 ]
  %4688 = phi i64 [ %4272, %4141 ], [ %4684, %4620 ]
  %4689 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %4687)
  %4690 = insertelement <8 x double> poison, double %4689, i64 0
  %4691 = shufflevector <8 x double> %4690, <8 x double> poison, <8 x i32> zeroinitializer
  %4692 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %4693 = fadd <8 x double> %4692, splat (double 1.000000e+00)
  store <8 x double> %4693, ptr %170, align 64, !tbaa !26
  %4694 = icmp sgt i64 %4688, 0
  br i1 %4694, label %4695, label %4699

4695:                                             ; preds = %4686
  %4696 = load ptr, ptr %126, align 8, !tbaa !28
  %4697 = load i64, ptr %115, align 16, !tbaa !21
  %4698 = add nsw i64 %4697, -1
  br label %4723

4699:                                             ; preds = %4749, %4686
  %4700 = phi <8 x double> [ zeroinitializer, %4686 ], [ %4764, %4749 ]
  %4701 = load i64, ptr %206, align 32, !tbaa !24
  %4702 = sitofp i64 %4701 to double
  %4703 = insertelement <8 x double> poison, double %4702, i64 0
  %4704 = shufflevector <8 x double> %4703, <8 x double> poison, <8 x i32> zeroinitializer
  %4705 = fcmp oge <8 x double> %4693, %4704
  %4706 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %4700)
  %4707 = fcmp oeq double %4706, 0.000000e+00
  %4708 = insertelement <8 x i1> poison, i1 %4707, i64 0
  %4709 = shufflevector <8 x i1> %4708, <8 x i1> poison, <8 x i32> zeroinitializer
  %4710 = and <8 x i1> %4709, %4705
  %4711 = load <8 x i64>, ptr %106, align 64, !tbaa !26
  %4712 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %4713 = fcmp olt <8 x double> %4691, %4712
  %4714 = or <8 x i1> %4713, %4710
  %4715 = fcmp oge <8 x double> %4693, splat (double 2.000000e+01)
  %4716 = or <8 x i1> %4715, %4714
  %4717 = select <8 x i1> %4716, <8 x i64> %4711, <8 x i64> zeroinitializer
  store <8 x i64> %4717, ptr %130, align 64, !tbaa !26
  %4718 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4717)
  %4719 = icmp eq i64 %4718, 0
  br i1 %4719, label %532, label %4720, !llvm.loop !59

4720:                                             ; preds = %4699
  br i1 %4694, label %4721, label %4767

4721:                                             ; preds = %4720
  %4722 = icmp eq <8 x i64> %4717, zeroinitializer
  br label %5101

4723:                                             ; preds = %4695, %4749
  %4724 = phi i64 [ 0, %4695 ], [ %4765, %4749 ]
  %4725 = phi <8 x double> [ zeroinitializer, %4695 ], [ %4764, %4749 ]
  %4726 = getelementptr inbounds nuw %struct.Piece, ptr %4696, i64 %4724
  %4727 = getelementptr inbounds nuw i8, ptr %4726, i64 9472
  %4728 = load i64, ptr %4727, align 64, !tbaa !31
  %4729 = icmp sgt i64 %4697, %4728
  br i1 %4729, label %4738, label %4730

4730:                                             ; preds = %4723
  %4731 = getelementptr inbounds nuw i8, ptr %4726, i64 9608
  %4732 = load ptr, ptr %4731, align 8, !tbaa !76
  %4733 = getelementptr inbounds <8 x double>, ptr %4732, i64 %4698
  %4734 = load <8 x double>, ptr %4733, align 64, !tbaa !26
  %4735 = getelementptr inbounds nuw i8, ptr %4726, i64 1920
  %4736 = load <8 x double>, ptr %4735, align 64, !tbaa !26
  %4737 = fmul <8 x double> %4734, %4736
  br label %4749

4738:                                             ; preds = %4723
  %4739 = getelementptr inbounds nuw i8, ptr %4726, i64 4160
  %4740 = load <8 x double>, ptr %4739, align 64, !tbaa !26
  %4741 = getelementptr inbounds nuw i8, ptr %4726, i64 1920
  %4742 = load <8 x double>, ptr %4741, align 64, !tbaa !26
  %4743 = getelementptr inbounds nuw i8, ptr %4726, i64 9608
  %4744 = load ptr, ptr %4743, align 8, !tbaa !76
  %4745 = getelementptr inbounds <8 x double>, ptr %4744, i64 %4698
  %4746 = load <8 x double>, ptr %4745, align 64, !tbaa !26
  %4747 = fsub <8 x double> %4740, %4742
  %4748 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4746, <8 x double> %4747, <8 x double> %4742)
  br label %4749

4749:                                             ; preds = %4730, %4738
  %4750 = phi <8 x double> [ %4737, %4730 ], [ %4748, %4738 ]
  %4751 = getelementptr inbounds nuw i8, ptr %4726, i64 9280
  %4752 = load <8 x i64>, ptr %4751, align 64, !tbaa !26
  %4753 = getelementptr inbounds nuw i8, ptr %4726, i64 8576
  %4754 = load <8 x double>, ptr %4753, align 64, !tbaa !26
  %4755 = fcmp une <8 x double> %4754, zeroinitializer
  %4756 = getelementptr inbounds nuw i8, ptr %4726, i64 3392
  %4757 = load <8 x double>, ptr %4756, align 64, !tbaa !26
  %4758 = fcmp uge <8 x double> %4757, %4750
  %4759 = select <8 x i1> %4758, <8 x i1> splat (i1 true), <8 x i1> %4755
  %4760 = icmp eq <8 x i64> %4752, zeroinitializer
  %4761 = select <8 x i1> %4759, <8 x i1> splat (i1 true), <8 x i1> %4760
  %4762 = select <8 x i1> %4761, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4763 = fcmp ogt <8 x double> %4725, %4762
  %4764 = select <8 x i1> %4763, <8 x double> %4725, <8 x double> %4762
  %4765 = add nuw nsw i64 %4724, 1
  %4766 = icmp eq i64 %4765, %4688
  br i1 %4766, label %4699, label %4723, !llvm.loop !179

4767:                                             ; preds = %5219, %4720
  %4768 = phi i64 [ %4688, %4720 ], [ %5225, %5219 ]
  %4769 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4770 = fadd <8 x double> %4769, splat (double 1.000000e+00)
  %4771 = icmp eq <8 x i64> %4717, zeroinitializer
  %4772 = select <8 x i1> %4771, <8 x double> %4769, <8 x double> %4770
  store <8 x double> %4772, ptr %158, align 64, !tbaa !26
  %4773 = fcmp ogt <8 x double> %4772, splat (double 4.000000e+01)
  %4774 = select <8 x i1> %4773, <8 x i64> %4717, <8 x i64> zeroinitializer
  %4775 = xor <8 x i64> %4774, %4717
  %4776 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4777 = fadd <8 x double> %4776, splat (double 1.000000e+00)
  %4778 = icmp eq <8 x i64> %4774, zeroinitializer
  %4779 = select <8 x i1> %4778, <8 x double> %4776, <8 x double> %4777
  store <8 x double> %4779, ptr %123, align 64, !tbaa !26
  %4780 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4781 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %4782 = fsub <8 x double> %4780, %4781
  %4783 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4782)
  %4784 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4785 = fmul <8 x double> %4784, splat (double 1.500000e+00)
  %4786 = fcmp ogt <8 x double> %4783, %4785
  %4787 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %4788 = fcmp ogt <8 x double> %4787, splat (double 2.000000e-03)
  %4789 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %4790 = fcmp oeq <8 x double> %4789, zeroinitializer
  %4791 = and <8 x i1> %4786, %4790
  %4792 = and <8 x i1> %4788, %4791
  %4793 = fdiv <8 x double> %4784, %4783
  %4794 = select <8 x i1> %4792, <8 x i64> %4775, <8 x i64> zeroinitializer
  %4795 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %4796 = fcmp ogt <8 x double> %4795, %4787
  %4797 = select <8 x i1> %4796, <8 x double> %4795, <8 x double> %4787
  %4798 = select <8 x i1> %4792, <8 x double> zeroinitializer, <8 x double> %4797
  %4799 = icmp eq <8 x i64> %4794, zeroinitializer
  %4800 = select <8 x i1> %4799, <8 x double> %4795, <8 x double> %4798
  store <8 x double> %4800, ptr %156, align 64, !tbaa !26
  %4801 = fcmp ogt <8 x double> %4793, splat (double 5.000000e-02)
  %4802 = select <8 x i1> %4801, <8 x double> %4793, <8 x double> splat (double 5.000000e-02)
  %4803 = fcmp olt <8 x double> %4802, splat (double 0x3FEE666666666666)
  %4804 = select <8 x i1> %4803, <8 x double> %4802, <8 x double> splat (double 0x3FEE666666666666)
  %4805 = fmul <8 x double> %4787, %4804
  %4806 = fcmp ogt <8 x double> %4805, splat (double 0x3EB0C6F7A0B5ED8D)
  %4807 = select <8 x i1> %4806, <8 x double> %4805, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4808 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4809 = select <8 x i1> %4799, <8 x double> %4808, <8 x double> %4807
  store <8 x double> %4809, ptr %136, align 64, !tbaa !26
  %4810 = load <8 x double>, ptr %120, align 64, !tbaa !26
  %4811 = fadd <8 x double> %4810, splat (double 1.000000e+00)
  %4812 = select <8 x i1> %4799, <8 x double> %4810, <8 x double> %4811
  store <8 x double> %4812, ptr %120, align 64, !tbaa !26
  %4813 = xor <8 x i64> %4794, %4775
  %4814 = icmp sgt i64 %4768, 0
  br i1 %4814, label %4815, label %4931

4815:                                             ; preds = %4767
  %4816 = load ptr, ptr %126, align 8, !tbaa !28
  %4817 = load <8 x double>, ptr %133, align 64, !tbaa !26
  %4818 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %4819 = fcmp une <8 x double> %4817, %4818
  %4820 = fcmp ule <8 x double> %4817, zeroinitializer
  %4821 = or <8 x i1> %4820, %4819
  %4822 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %4823 = fcmp ogt <8 x double> %4787, splat (double 0x3E7AD7F29ABCAF48)
  %4824 = fcmp ogt <8 x double> %4787, splat (double 1.000000e-05)
  %4825 = fcmp ogt <8 x double> %4787, splat (double 1.000000e-04)
  br label %4826

4826:                                             ; preds = %4815, %4926
  %4827 = phi i64 [ 0, %4815 ], [ %4929, %4926 ]
  %4828 = phi <8 x double> [ splat (double 1.000000e+00), %4815 ], [ %4928, %4926 ]
  %4829 = phi <8 x i64> [ zeroinitializer, %4815 ], [ %4877, %4926 ]
  %4830 = phi <8 x i64> [ zeroinitializer, %4815 ], [ %4927, %4926 ]
  %4831 = getelementptr inbounds nuw %struct.Piece, ptr %4816, i64 %4827
  %4832 = getelementptr inbounds nuw i8, ptr %4831, i64 3456
  %4833 = load <8 x double>, ptr %4832, align 64, !tbaa !26
  %4834 = getelementptr inbounds nuw i8, ptr %4831, i64 9280
  %4835 = load <8 x i64>, ptr %4834, align 64, !tbaa !26
  %4836 = xor <8 x i64> %4835, splat (i64 -1)
  %4837 = getelementptr inbounds nuw i8, ptr %4831, i64 1280
  %4838 = load <8 x double>, ptr %4837, align 64, !tbaa !26
  %4839 = fmul <8 x double> %4822, %4838
  %4840 = fcmp ogt <8 x double> %4839, splat (double 0x3E7AD7F29ABCAF48)
  %4841 = fneg <8 x double> %4839
  %4842 = select <8 x i1> %4840, <8 x double> %4841, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4843 = fcmp olt <8 x double> %4833, %4842
  %4844 = select <8 x i1> %4843, <8 x i1> %4821, <8 x i1> zeroinitializer
  %4845 = select <8 x i1> %4844, <8 x i64> %4836, <8 x i64> zeroinitializer
  %4846 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4845)
  %4847 = icmp eq i64 %4846, 0
  br i1 %4847, label %4875, label %4848

4848:                                             ; preds = %4826
  %4849 = getelementptr inbounds nuw i8, ptr %4831, i64 4352
  %4850 = load <8 x double>, ptr %4849, align 64, !tbaa !26
  %4851 = fcmp ole <8 x double> %4850, zeroinitializer
  %4852 = select <8 x i1> %4851, <8 x i64> %4845, <8 x i64> zeroinitializer
  %4853 = getelementptr inbounds nuw i8, ptr %4831, i64 1216
  %4854 = load <8 x double>, ptr %4853, align 64, !tbaa !26
  %4855 = fmul <8 x double> %4854, splat (double -3.000000e-07)
  %4856 = fcmp olt <8 x double> %4833, %4855
  %4857 = select <8 x i1> %4823, <8 x i1> %4856, <8 x i1> zeroinitializer
  %4858 = select <8 x i1> %4857, <8 x i64> %4852, <8 x i64> zeroinitializer
  %4859 = or <8 x i64> %4858, %4829
  %4860 = fcmp olt <8 x double> %4828, splat (double 3.000000e-01)
  %4861 = icmp eq <8 x i64> %4858, zeroinitializer
  %4862 = select <8 x i1> %4861, <8 x i1> splat (i1 true), <8 x i1> %4860
  %4863 = select <8 x i1> %4862, <8 x double> %4828, <8 x double> splat (double 3.000000e-01)
  %4864 = xor <8 x i64> %4852, splat (i64 -1)
  %4865 = and <8 x i64> %4845, %4864
  %4866 = select <8 x i1> %4824, <8 x i64> %4865, <8 x i64> zeroinitializer
  %4867 = fsub <8 x double> %4850, %4833
  %4868 = fdiv <8 x double> %4850, %4867
  %4869 = or <8 x i64> %4866, %4830
  %4870 = or <8 x i64> %4869, %4858
  %4871 = fcmp olt <8 x double> %4863, %4868
  %4872 = icmp eq <8 x i64> %4866, zeroinitializer
  %4873 = select <8 x i1> %4872, <8 x i1> splat (i1 true), <8 x i1> %4871
  %4874 = select <8 x i1> %4873, <8 x double> %4863, <8 x double> %4868
  br label %4875

4875:                                             ; preds = %4826, %4848
  %4876 = phi <8 x i64> [ %4870, %4848 ], [ %4830, %4826 ]
  %4877 = phi <8 x i64> [ %4859, %4848 ], [ %4829, %4826 ]
  %4878 = phi <8 x double> [ %4874, %4848 ], [ %4828, %4826 ]
  %4879 = getelementptr inbounds nuw i8, ptr %4831, i64 3392
  %4880 = load <8 x double>, ptr %4879, align 64, !tbaa !26
  %4881 = getelementptr inbounds nuw i8, ptr %4831, i64 8576
  %4882 = load <8 x double>, ptr %4881, align 64, !tbaa !26
  %4883 = fcmp oeq <8 x double> %4882, zeroinitializer
  %4884 = getelementptr inbounds nuw i8, ptr %4831, i64 1856
  %4885 = load <8 x double>, ptr %4884, align 64, !tbaa !26
  %4886 = fmul <8 x double> %4885, splat (double 0x3FEFF7CED916872B)
  %4887 = fcmp olt <8 x double> %4880, %4886
  %4888 = and <8 x i1> %4883, %4887
  %4889 = and <8 x i1> %4825, %4888
  %4890 = bitcast <8 x i1> %4889 to i8
  %4891 = icmp eq i8 %4890, 0
  br i1 %4891, label %4902, label %4892

4892:                                             ; preds = %4875
  %4893 = getelementptr inbounds nuw i8, ptr %4831, i64 4288
  %4894 = load <8 x double>, ptr %4893, align 64, !tbaa !26
  %4895 = fsub <8 x double> %4894, %4885
  %4896 = fsub <8 x double> %4894, %4880
  %4897 = fdiv <8 x double> %4895, %4896
  %4898 = select <8 x i1> %4889, <8 x i64> splat (i64 -1), <8 x i64> %4876
  %4899 = fcmp uge <8 x double> %4878, %4897
  %4900 = select <8 x i1> %4889, <8 x i1> %4899, <8 x i1> zeroinitializer
  %4901 = select <8 x i1> %4900, <8 x double> %4897, <8 x double> %4878
  br label %4902

4902:                                             ; preds = %4892, %4875
  %4903 = phi <8 x i64> [ %4898, %4892 ], [ %4876, %4875 ]
  %4904 = phi <8 x double> [ %4901, %4892 ], [ %4878, %4875 ]
  %4905 = fcmp oeq <8 x double> %4882, splat (double 1.000000e+00)
  %4906 = getelementptr inbounds nuw i8, ptr %4831, i64 3648
  %4907 = load <8 x double>, ptr %4906, align 64, !tbaa !26
  %4908 = getelementptr inbounds nuw i8, ptr %4831, i64 1984
  %4909 = load <8 x double>, ptr %4908, align 64, !tbaa !26
  %4910 = fmul <8 x double> %4909, splat (double 1.000100e+00)
  %4911 = fcmp ogt <8 x double> %4907, %4910
  %4912 = and <8 x i1> %4905, %4911
  %4913 = and <8 x i1> %4825, %4912
  %4914 = bitcast <8 x i1> %4913 to i8
  %4915 = icmp eq i8 %4914, 0
  br i1 %4915, label %4926, label %4916

4916:                                             ; preds = %4902
  %4917 = getelementptr inbounds nuw i8, ptr %4831, i64 4544
  %4918 = load <8 x double>, ptr %4917, align 64, !tbaa !26
  %4919 = fsub <8 x double> %4909, %4918
  %4920 = fsub <8 x double> %4907, %4918
  %4921 = fdiv <8 x double> %4919, %4920
  %4922 = select <8 x i1> %4913, <8 x i64> splat (i64 -1), <8 x i64> %4903
  %4923 = fcmp uge <8 x double> %4904, %4921
  %4924 = select <8 x i1> %4913, <8 x i1> %4923, <8 x i1> zeroinitializer
  %4925 = select <8 x i1> %4924, <8 x double> %4921, <8 x double> %4904
  br label %4926

4926:                                             ; preds = %4902, %4916
  %4927 = phi <8 x i64> [ %4922, %4916 ], [ %4903, %4902 ]
  %4928 = phi <8 x double> [ %4925, %4916 ], [ %4904, %4902 ]
  %4929 = add nuw nsw i64 %4827, 1
  %4930 = icmp eq i64 %4929, %4768
  br i1 %4930, label %4931, label %4826, !llvm.loop !180

4931:                                             ; preds = %4926, %4767
  %4932 = phi <8 x i64> [ zeroinitializer, %4767 ], [ %4927, %4926 ]
  %4933 = phi <8 x i64> [ zeroinitializer, %4767 ], [ %4877, %4926 ]
  %4934 = phi <8 x double> [ splat (double 1.000000e+00), %4767 ], [ %4928, %4926 ]
  %4935 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4932)
  %4936 = icmp eq i64 %4935, 0
  %4937 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4933)
  %4938 = icmp eq i64 %4937, 0
  %4939 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4934)
  %4940 = insertelement <8 x double> poison, double %4939, i64 0
  %4941 = shufflevector <8 x double> %4940, <8 x double> poison, <8 x i32> zeroinitializer
  %4942 = select i1 %4936, <8 x i64> zeroinitializer, <8 x i64> %4813
  %4943 = fcmp ogt <8 x double> %4800, %4787
  %4944 = select <8 x i1> %4943, <8 x double> %4800, <8 x double> %4787
  %4945 = select i1 %4938, <8 x i1> splat (i1 true), <8 x i1> zeroinitializer
  %4946 = select <8 x i1> %4945, <8 x double> %4944, <8 x double> zeroinitializer
  %4947 = icmp eq <8 x i64> %4942, zeroinitializer
  %4948 = select <8 x i1> %4947, <8 x double> %4800, <8 x double> %4946
  %4949 = fcmp ogt <8 x double> %4941, splat (double 5.000000e-02)
  %4950 = select <8 x i1> %4949, <8 x double> %4941, <8 x double> splat (double 5.000000e-02)
  %4951 = fcmp olt <8 x double> %4950, splat (double 0x3FEE666666666666)
  %4952 = select <8 x i1> %4951, <8 x double> %4950, <8 x double> splat (double 0x3FEE666666666666)
  %4953 = fmul <8 x double> %4787, %4952
  %4954 = fcmp ogt <8 x double> %4953, splat (double 0x3EB0C6F7A0B5ED8D)
  %4955 = select <8 x i1> %4954, <8 x double> %4953, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4956 = select <8 x i1> %4947, <8 x double> %4809, <8 x double> %4955
  %4957 = fadd <8 x double> %4812, splat (double 1.000000e+00)
  %4958 = select <8 x i1> %4947, <8 x double> %4812, <8 x double> %4957
  %4959 = xor <8 x i64> %4942, %4813
  %4960 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %4961 = fmul <8 x double> %4960, splat (double 5.000000e-01)
  %4962 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %4963 = load <8 x i64>, ptr %140, align 64, !tbaa !26
  %4964 = fneg <8 x double> %4961
  %4965 = icmp eq <8 x i64> %4963, zeroinitializer
  %4966 = select <8 x i1> %4965, <8 x double> %4964, <8 x double> %4961
  %4967 = fadd <8 x double> %4962, %4966
  %4968 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %4969 = fsub <8 x double> %4968, %4967
  %4970 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %4971 = fsub <8 x double> %4970, %4967
  %4972 = fneg <8 x double> %4969
  %4973 = select <8 x i1> %4965, <8 x double> %4972, <8 x double> %4969
  %4974 = fneg <8 x double> %4971
  %4975 = select <8 x i1> %4965, <8 x double> %4974, <8 x double> %4971
  %4976 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %4977 = fcmp oeq <8 x double> %4976, zeroinitializer
  %4978 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %4979 = fcmp oeq <8 x double> %4978, zeroinitializer
  %4980 = and <8 x i1> %4977, %4979
  %4981 = fcmp olt <8 x double> %4973, splat (double -4.000000e-03)
  %4982 = and <8 x i1> %4980, %4981
  %4983 = fcmp ogt <8 x double> %4975, splat (double 4.000000e-03)
  %4984 = and <8 x i1> %4983, %4982
  %4985 = and <8 x i1> %4788, %4984
  %4986 = fsub <8 x double> %4973, %4975
  %4987 = fdiv <8 x double> %4973, %4986
  %4988 = select <8 x i1> %4985, <8 x i64> %4959, <8 x i64> zeroinitializer
  %4989 = fcmp ogt <8 x double> %4948, %4787
  %4990 = icmp eq <8 x i64> %4988, zeroinitializer
  %4991 = select <8 x i1> %4990, <8 x i1> splat (i1 true), <8 x i1> %4989
  %4992 = select <8 x i1> %4991, <8 x double> %4948, <8 x double> %4787
  store <8 x double> %4992, ptr %156, align 64, !tbaa !26
  %4993 = fcmp ogt <8 x double> %4987, splat (double 5.000000e-02)
  %4994 = select <8 x i1> %4993, <8 x double> %4987, <8 x double> splat (double 5.000000e-02)
  %4995 = fcmp olt <8 x double> %4994, splat (double 0x3FEE666666666666)
  %4996 = select <8 x i1> %4995, <8 x double> %4994, <8 x double> splat (double 0x3FEE666666666666)
  %4997 = fmul <8 x double> %4787, %4996
  %4998 = fcmp ogt <8 x double> %4997, splat (double 0x3EB0C6F7A0B5ED8D)
  %4999 = select <8 x i1> %4998, <8 x double> %4997, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %5000 = select <8 x i1> %4990, <8 x double> %4956, <8 x double> %4999
  store <8 x double> %5000, ptr %136, align 64, !tbaa !26
  %5001 = fadd <8 x double> %4958, splat (double 1.000000e+00)
  %5002 = select <8 x i1> %4990, <8 x double> %4958, <8 x double> %5001
  store <8 x double> %5002, ptr %120, align 64, !tbaa !26
  %5003 = xor <8 x i64> %4988, %4959
  %5004 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %5005 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %5006 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %5007 = fsub <8 x double> %5005, %5006
  %5008 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %5009 = fcmp une <8 x double> %5008, splat (double 1.000000e+00)
  %5010 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %5011 = fsub <8 x double> %4968, %5010
  %5012 = select <8 x i1> %5009, <8 x double> splat (double -1.000000e+00), <8 x double> %5011
  %5013 = fcmp une <8 x double> %5008, splat (double 2.000000e+00)
  %5014 = fsub <8 x double> %5004, %5010
  %5015 = select <8 x i1> %5013, <8 x double> %5012, <8 x double> %5014
  %5016 = fcmp une <8 x double> %5008, splat (double 3.000000e+00)
  %5017 = fsub <8 x double> %5007, %5010
  %5018 = select <8 x i1> %5016, <8 x double> %5015, <8 x double> %5017
  %5019 = fcmp une <8 x double> %5008, splat (double 4.000000e+00)
  %5020 = fsub <8 x double> %5010, %5007
  %5021 = select <8 x i1> %5019, <8 x double> %5018, <8 x double> %5020
  br i1 %4814, label %5022, label %5054

5022:                                             ; preds = %4931
  %5023 = load ptr, ptr %126, align 8, !tbaa !28
  %5024 = and i64 %4768, 1
  %5025 = icmp eq i64 %4768, 1
  br i1 %5025, label %5044, label %5026

5026:                                             ; preds = %5022
  %5027 = and i64 %4768, 9223372036854775806
  br label %5028

5028:                                             ; preds = %5028, %5026
  %5029 = phi i64 [ 0, %5026 ], [ %5041, %5028 ]
  %5030 = phi <8 x double> [ splat (double 1.000000e+09), %5026 ], [ %5040, %5028 ]
  %5031 = phi i64 [ 0, %5026 ], [ %5042, %5028 ]
  %5032 = getelementptr inbounds nuw %struct.Piece, ptr %5023, i64 %5029, i32 41
  %5033 = load <8 x double>, ptr %5032, align 64, !tbaa !26
  %5034 = fcmp olt <8 x double> %5030, %5033
  %5035 = select <8 x i1> %5034, <8 x double> %5030, <8 x double> %5033
  %5036 = or disjoint i64 %5029, 1
  %5037 = getelementptr inbounds nuw %struct.Piece, ptr %5023, i64 %5036, i32 41
  %5038 = load <8 x double>, ptr %5037, align 64, !tbaa !26
  %5039 = fcmp olt <8 x double> %5035, %5038
  %5040 = select <8 x i1> %5039, <8 x double> %5035, <8 x double> %5038
  %5041 = add nuw nsw i64 %5029, 2
  %5042 = add i64 %5031, 2
  %5043 = icmp eq i64 %5042, %5027
  br i1 %5043, label %5044, label %5028, !llvm.loop !181

5044:                                             ; preds = %5028, %5022
  %5045 = phi <8 x double> [ poison, %5022 ], [ %5040, %5028 ]
  %5046 = phi i64 [ 0, %5022 ], [ %5041, %5028 ]
  %5047 = phi <8 x double> [ splat (double 1.000000e+09), %5022 ], [ %5040, %5028 ]
  %5048 = icmp eq i64 %5024, 0
  br i1 %5048, label %5054, label %5049

5049:                                             ; preds = %5044
  %5050 = getelementptr inbounds nuw %struct.Piece, ptr %5023, i64 %5046, i32 41
  %5051 = load <8 x double>, ptr %5050, align 64, !tbaa !26
  %5052 = fcmp olt <8 x double> %5047, %5051
  %5053 = select <8 x i1> %5052, <8 x double> %5047, <8 x double> %5051
  br label %5054

5054:                                             ; preds = %5049, %5044, %4931
  %5055 = phi <8 x double> [ splat (double 1.000000e+09), %4931 ], [ %5045, %5044 ], [ %5053, %5049 ]
  %5056 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %5055)
  %5057 = insertelement <8 x double> poison, double %5056, i64 0
  %5058 = shufflevector <8 x double> %5057, <8 x double> poison, <8 x i32> zeroinitializer
  %5059 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %5060 = fsub <8 x double> %5059, %5006
  %5061 = fsub <8 x double> %4970, %5010
  %5062 = select <8 x i1> %5009, <8 x double> splat (double -1.000000e+00), <8 x double> %5061
  %5063 = fsub <8 x double> %5058, %5010
  %5064 = select <8 x i1> %5013, <8 x double> %5062, <8 x double> %5063
  %5065 = fsub <8 x double> %5060, %5010
  %5066 = select <8 x i1> %5016, <8 x double> %5064, <8 x double> %5065
  %5067 = fsub <8 x double> %5010, %5060
  %5068 = select <8 x i1> %5019, <8 x double> %5066, <8 x double> %5067
  %5069 = fcmp une <8 x double> %5008, zeroinitializer
  %5070 = fcmp oge <8 x double> %4787, splat (double 5.000000e-02)
  %5071 = and <8 x i1> %5070, %5069
  %5072 = fcmp olt <8 x double> %5021, zeroinitializer
  %5073 = and <8 x i1> %5071, %5072
  %5074 = fsub <8 x double> %5068, %5021
  %5075 = fmul <8 x double> %5074, splat (double 2.000000e-02)
  %5076 = fcmp ogt <8 x double> %5068, %5075
  %5077 = and <8 x i1> %5073, %5076
  %5078 = fsub <8 x double> %5021, %5068
  %5079 = fdiv <8 x double> %5021, %5078
  %5080 = fcmp olt <8 x double> %5079, splat (double 0x3FEE666666666666)
  %5081 = and <8 x i1> %5080, %5077
  %5082 = select <8 x i1> %5081, <8 x i64> %5003, <8 x i64> zeroinitializer
  %5083 = fcmp ogt <8 x double> %4992, %4787
  %5084 = icmp eq <8 x i64> %5082, zeroinitializer
  %5085 = select <8 x i1> %5084, <8 x i1> splat (i1 true), <8 x i1> %5083
  %5086 = select <8 x i1> %5085, <8 x double> %4992, <8 x double> %4787
  store <8 x double> %5086, ptr %156, align 64, !tbaa !26
  %5087 = fcmp ogt <8 x double> %5079, splat (double 5.000000e-02)
  %5088 = select <8 x i1> %5087, <8 x double> %5079, <8 x double> splat (double 5.000000e-02)
  %5089 = fcmp olt <8 x double> %5088, splat (double 0x3FEE666666666666)
  %5090 = select <8 x i1> %5089, <8 x double> %5088, <8 x double> splat (double 0x3FEE666666666666)
  %5091 = fmul <8 x double> %4787, %5090
  %5092 = fcmp ogt <8 x double> %5091, splat (double 0x3EB0C6F7A0B5ED8D)
  %5093 = select <8 x i1> %5092, <8 x double> %5091, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %5094 = select <8 x i1> %5084, <8 x double> %5000, <8 x double> %5093
  store <8 x double> %5094, ptr %136, align 64, !tbaa !26
  %5095 = fadd <8 x double> %5002, splat (double 1.000000e+00)
  %5096 = select <8 x i1> %5084, <8 x double> %5002, <8 x double> %5095
  store <8 x double> %5096, ptr %120, align 64, !tbaa !26
  %5097 = xor <8 x i64> %5082, %5003
  %5098 = or <8 x i64> %5097, %4774
  %5099 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5098)
  %5100 = icmp eq i64 %5099, 0
  br i1 %5100, label %532, label %5227

5101:                                             ; preds = %4721, %5219
  %5102 = phi i64 [ 0, %4721 ], [ %5224, %5219 ]
  %5103 = load ptr, ptr %126, align 8, !tbaa !28
  %5104 = getelementptr inbounds nuw %struct.Piece, ptr %5103, i64 %5102
  %5105 = getelementptr inbounds nuw i8, ptr %5104, i64 9472
  %5106 = load i64, ptr %5105, align 64, !tbaa !31
  %5107 = icmp eq i64 %5106, 0
  %5108 = getelementptr inbounds nuw i8, ptr %5104, i64 9544
  %5109 = load ptr, ptr %5108, align 8, !tbaa !86
  br i1 %5107, label %5110, label %5147

5110:                                             ; preds = %5101
  %5111 = load <8 x double>, ptr %5109, align 64, !tbaa !26
  %5112 = getelementptr inbounds nuw i8, ptr %5104, i64 1728
  %5113 = load <8 x double>, ptr %5112, align 64, !tbaa !26
  %5114 = getelementptr inbounds nuw i8, ptr %5109, i64 64
  %5115 = load <8 x double>, ptr %5114, align 64, !tbaa !26
  %5116 = fsub <8 x double> %5115, %5111
  %5117 = fneg <8 x double> %5113
  %5118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5117, <8 x double> %5116, <8 x double> %5111)
  %5119 = getelementptr inbounds nuw i8, ptr %5104, i64 704
  %5120 = load <8 x double>, ptr %5119, align 64, !tbaa !26, !noalias !182
  %5121 = getelementptr inbounds nuw i8, ptr %5104, i64 768
  %5122 = load <8 x double>, ptr %5121, align 64, !tbaa !26, !noalias !182
  %5123 = getelementptr inbounds nuw i8, ptr %5104, i64 832
  %5124 = load <8 x double>, ptr %5123, align 64, !tbaa !26, !noalias !182
  %5125 = getelementptr inbounds nuw i8, ptr %5104, i64 896
  %5126 = load <8 x double>, ptr %5125, align 64, !tbaa !26, !noalias !182
  %5127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5118, <8 x double> %5126, <8 x double> %5124)
  %5128 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5118, <8 x double> %5127, <8 x double> %5122)
  %5129 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5118, <8 x double> %5128, <8 x double> %5120)
  %5130 = fmul <8 x double> %5118, %5129
  %5131 = getelementptr inbounds nuw i8, ptr %5104, i64 192
  %5132 = load <8 x double>, ptr %5131, align 64, !tbaa !26, !noalias !182
  %5133 = getelementptr inbounds nuw i8, ptr %5104, i64 256
  %5134 = load <8 x double>, ptr %5133, align 64, !tbaa !26, !noalias !182
  %5135 = getelementptr inbounds nuw i8, ptr %5104, i64 320
  %5136 = load <8 x double>, ptr %5135, align 64, !tbaa !26, !noalias !182
  %5137 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5130, <8 x double> %5136, <8 x double> %5134)
  %5138 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5130, <8 x double> %5137, <8 x double> %5132)
  %5139 = fdiv <8 x double> splat (double 1.000000e+00), %5138
  %5140 = fmul <8 x double> %5136, %5130
  %5141 = fmul <8 x double> %5140, splat (double 0x3FD5555555555555)
  %5142 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5134, <8 x double> splat (double 5.000000e-01), <8 x double> %5141)
  %5143 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5130, <8 x double> %5142, <8 x double> %5132)
  %5144 = fmul <8 x double> %5130, %5143
  %5145 = fsub <8 x double> %5118, %5144
  %5146 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5145, <8 x double> %5139, <8 x double> %5130)
  br label %5219

5147:                                             ; preds = %5101
  %5148 = getelementptr <8 x double>, ptr %5109, i64 %5106
  %5149 = getelementptr i8, ptr %5148, i64 -64
  %5150 = load <8 x double>, ptr %5149, align 64, !tbaa !26
  %5151 = getelementptr inbounds nuw i8, ptr %5104, i64 1024
  %5152 = load <8 x double>, ptr %5151, align 64, !tbaa !26
  %5153 = fdiv <8 x double> %5150, %5152
  %5154 = load <8 x double>, ptr %5148, align 64, !tbaa !26
  %5155 = getelementptr inbounds nuw i8, ptr %5104, i64 704
  %5156 = load <8 x double>, ptr %5155, align 64, !tbaa !26, !noalias !185
  %5157 = getelementptr inbounds nuw i8, ptr %5104, i64 768
  %5158 = load <8 x double>, ptr %5157, align 64, !tbaa !26, !noalias !185
  %5159 = getelementptr inbounds nuw i8, ptr %5104, i64 832
  %5160 = load <8 x double>, ptr %5159, align 64, !tbaa !26, !noalias !185
  %5161 = getelementptr inbounds nuw i8, ptr %5104, i64 896
  %5162 = load <8 x double>, ptr %5161, align 64, !tbaa !26, !noalias !185
  %5163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5154, <8 x double> %5162, <8 x double> %5160)
  %5164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5154, <8 x double> %5163, <8 x double> %5158)
  %5165 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5154, <8 x double> %5164, <8 x double> %5156)
  %5166 = fmul <8 x double> %5154, %5165
  %5167 = getelementptr inbounds nuw i8, ptr %5104, i64 192
  %5168 = load <8 x double>, ptr %5167, align 64, !tbaa !26, !noalias !185
  %5169 = getelementptr inbounds nuw i8, ptr %5104, i64 256
  %5170 = load <8 x double>, ptr %5169, align 64, !tbaa !26, !noalias !185
  %5171 = getelementptr inbounds nuw i8, ptr %5104, i64 320
  %5172 = load <8 x double>, ptr %5171, align 64, !tbaa !26, !noalias !185
  %5173 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5166, <8 x double> %5172, <8 x double> %5170)
  %5174 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5166, <8 x double> %5173, <8 x double> %5168)
  %5175 = fdiv <8 x double> splat (double 1.000000e+00), %5174
  %5176 = fmul <8 x double> %5172, %5166
  %5177 = fmul <8 x double> %5176, splat (double 0x3FD5555555555555)
  %5178 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5170, <8 x double> splat (double 5.000000e-01), <8 x double> %5177)
  %5179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5166, <8 x double> %5178, <8 x double> %5168)
  %5180 = fmul <8 x double> %5166, %5179
  %5181 = fsub <8 x double> %5154, %5180
  %5182 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5181, <8 x double> %5175, <8 x double> %5166)
  %5183 = getelementptr inbounds nuw i8, ptr %5104, i64 3264
  %5184 = load <8 x double>, ptr %5183, align 64, !tbaa !26
  %5185 = getelementptr inbounds nuw i8, ptr %5104, i64 3328
  %5186 = load <8 x double>, ptr %5185, align 64, !tbaa !26
  %5187 = getelementptr inbounds nuw i8, ptr %5104, i64 64
  %5188 = load <8 x double>, ptr %5187, align 64, !tbaa !26
  %5189 = fsub <8 x double> %5186, %5188
  %5190 = fmul <8 x double> %5184, %5189
  %5191 = getelementptr inbounds nuw i8, ptr %5104, i64 960
  %5192 = load <8 x double>, ptr %5191, align 64, !tbaa !26
  %5193 = getelementptr inbounds nuw i8, ptr %5104, i64 3200
  %5194 = load <8 x double>, ptr %5193, align 64, !tbaa !26
  %5195 = fdiv <8 x double> %5192, %5194
  %5196 = fmul <8 x double> %5154, splat (double 2.000000e+00)
  %5197 = getelementptr inbounds nuw i8, ptr %5104, i64 384
  %5198 = load <8 x double>, ptr %5197, align 64, !tbaa !26
  %5199 = getelementptr inbounds nuw i8, ptr %5104, i64 448
  %5200 = load <8 x double>, ptr %5199, align 64, !tbaa !26
  %5201 = getelementptr inbounds nuw i8, ptr %5104, i64 512
  %5202 = load <8 x double>, ptr %5201, align 64, !tbaa !26
  %5203 = getelementptr inbounds nuw i8, ptr %5104, i64 576
  %5204 = load <8 x double>, ptr %5203, align 64, !tbaa !26
  %5205 = getelementptr inbounds nuw i8, ptr %5104, i64 640
  %5206 = load <8 x double>, ptr %5205, align 64, !tbaa !26
  %5207 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5196, <8 x double> %5206, <8 x double> %5204)
  %5208 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5196, <8 x double> %5207, <8 x double> %5202)
  %5209 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5196, <8 x double> %5208, <8 x double> %5200)
  %5210 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5196, <8 x double> %5209, <8 x double> %5198)
  %5211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5182, <8 x double> %5172, <8 x double> %5170)
  %5212 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5182, <8 x double> %5211, <8 x double> %5168)
  %5213 = fmul <8 x double> %5212, %5210
  %5214 = fdiv <8 x double> %5213, %5190
  %5215 = fmul <8 x double> %5182, %5214
  %5216 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5195, <8 x double> %5153, <8 x double> %5215)
  %5217 = fadd <8 x double> %5195, %5214
  %5218 = fdiv <8 x double> %5216, %5217
  br label %5219

5219:                                             ; preds = %5110, %5147
  %5220 = phi <8 x double> [ %5218, %5147 ], [ %5146, %5110 ]
  %5221 = getelementptr inbounds nuw i8, ptr %5104, i64 8512
  %5222 = load <8 x double>, ptr %5221, align 64, !tbaa !26
  %5223 = select <8 x i1> %4722, <8 x double> %5222, <8 x double> %5220
  store <8 x double> %5223, ptr %5221, align 64, !tbaa !26
  %5224 = add nuw nsw i64 %5102, 1
  %5225 = load i64, ptr %153, align 8, !tbaa !20
  %5226 = icmp slt i64 %5224, %5225
  br i1 %5226, label %5101, label %4767, !llvm.loop !188

5227:                                             ; preds = %5054
  %5228 = icmp eq <8 x i64> %5098, zeroinitializer
  %5229 = select <8 x i1> %5228, <8 x double> %4781, <8 x double> %4780
  store <8 x double> %5229, ptr %208, align 64, !tbaa !26
  %5230 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %5231 = select <8 x i1> %5228, <8 x double> %5230, <8 x double> %4968
  store <8 x double> %5231, ptr %147, align 64, !tbaa !26
  %5232 = select <8 x i1> %5228, <8 x double> %4968, <8 x double> %4970
  store <8 x double> %5232, ptr %141, align 64, !tbaa !26
  %5233 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %5234 = select <8 x i1> %5228, <8 x double> %5233, <8 x double> %5005
  store <8 x double> %5234, ptr %253, align 64, !tbaa !26
  %5235 = select <8 x i1> %5228, <8 x double> %5005, <8 x double> %5059
  store <8 x double> %5235, ptr %254, align 64, !tbaa !26
  %5236 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %5237 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %5238 = select <8 x i1> %5228, <8 x double> %5237, <8 x double> %5236
  store <8 x double> %5238, ptr %255, align 64, !tbaa !26
  %5239 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %5240 = select <8 x i1> %5228, <8 x double> %5236, <8 x double> %5239
  store <8 x double> %5240, ptr %256, align 64, !tbaa !26
  %5241 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %5242 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %5243 = select <8 x i1> %5228, <8 x double> %5242, <8 x double> %5241
  store <8 x double> %5243, ptr %258, align 64, !tbaa !26
  %5244 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %5245 = select <8 x i1> %5228, <8 x double> %5241, <8 x double> %5244
  store <8 x double> %5245, ptr %259, align 64, !tbaa !26
  %5246 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %5247 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %5248 = select <8 x i1> %5228, <8 x double> %5247, <8 x double> %5246
  store <8 x double> %5248, ptr %261, align 64, !tbaa !26
  %5249 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %5250 = select <8 x i1> %5228, <8 x double> %5246, <8 x double> %5249
  store <8 x double> %5250, ptr %262, align 64, !tbaa !26
  %5251 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %5252 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %5253 = select <8 x i1> %5228, <8 x double> %5252, <8 x double> %5251
  store <8 x double> %5253, ptr %264, align 64, !tbaa !26
  %5254 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %5255 = select <8 x i1> %5228, <8 x double> %5251, <8 x double> %5254
  store <8 x double> %5255, ptr %265, align 64, !tbaa !26
  %5256 = xor <8 x i64> %5098, splat (i64 -1)
  br i1 %4814, label %5257, label %5651

5257:                                             ; preds = %5227, %5616
  %5258 = phi i64 [ %5628, %5616 ], [ 0, %5227 ]
  %5259 = load ptr, ptr %126, align 8, !tbaa !28
  %5260 = getelementptr inbounds nuw %struct.Piece, ptr %5259, i64 %5258
  %5261 = getelementptr inbounds nuw i8, ptr %5260, i64 2048
  %5262 = load <8 x double>, ptr %5261, align 64, !tbaa !26
  %5263 = fcmp ogt <8 x double> %5262, zeroinitializer
  %5264 = bitcast <8 x i1> %5263 to i8
  %5265 = icmp eq i8 %5264, 0
  br i1 %5265, label %5523, label %5266

5266:                                             ; preds = %5257
  %5267 = load i64, ptr %115, align 16, !tbaa !21
  %5268 = add i64 %5267, -1
  %5269 = getelementptr inbounds nuw i8, ptr %5260, i64 5056
  %5270 = load <8 x double>, ptr %5269, align 64, !tbaa !26
  %5271 = getelementptr inbounds nuw i8, ptr %5260, i64 4160
  %5272 = load <8 x double>, ptr %5271, align 64, !tbaa !26
  %5273 = getelementptr inbounds nuw i8, ptr %5260, i64 9472
  %5274 = load i64, ptr %5273, align 64, !tbaa !31
  %5275 = icmp sgt i64 %5267, %5274
  br i1 %5275, label %5284, label %5276

5276:                                             ; preds = %5266
  %5277 = getelementptr inbounds nuw i8, ptr %5260, i64 9608
  %5278 = load ptr, ptr %5277, align 8, !tbaa !76
  %5279 = getelementptr inbounds <8 x double>, ptr %5278, i64 %5268
  %5280 = load <8 x double>, ptr %5279, align 64, !tbaa !26
  %5281 = getelementptr inbounds nuw i8, ptr %5260, i64 1920
  %5282 = load <8 x double>, ptr %5281, align 64, !tbaa !26
  %5283 = fmul <8 x double> %5280, %5282
  br label %5293

5284:                                             ; preds = %5266
  %5285 = getelementptr inbounds nuw i8, ptr %5260, i64 1920
  %5286 = load <8 x double>, ptr %5285, align 64, !tbaa !26
  %5287 = getelementptr inbounds nuw i8, ptr %5260, i64 9608
  %5288 = load ptr, ptr %5287, align 8, !tbaa !76
  %5289 = getelementptr inbounds <8 x double>, ptr %5288, i64 %5268
  %5290 = load <8 x double>, ptr %5289, align 64, !tbaa !26
  %5291 = fsub <8 x double> %5270, %5286
  %5292 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5290, <8 x double> %5291, <8 x double> %5286)
  br label %5293

5293:                                             ; preds = %5284, %5276
  %5294 = phi <8 x double> [ %5282, %5276 ], [ %5286, %5284 ]
  %5295 = phi <8 x double> [ %5283, %5276 ], [ %5292, %5284 ]
  %5296 = getelementptr inbounds nuw i8, ptr %5260, i64 3392
  %5297 = load <8 x double>, ptr %5296, align 64, !tbaa !26
  %5298 = fcmp ole <8 x double> %5295, %5297
  %5299 = getelementptr inbounds nuw i8, ptr %5260, i64 8576
  %5300 = load <8 x double>, ptr %5299, align 64, !tbaa !26
  %5301 = fcmp oeq <8 x double> %5300, zeroinitializer
  %5302 = select <8 x i1> %5301, <8 x i1> %5298, <8 x i1> zeroinitializer
  %5303 = select <8 x i1> %5302, <8 x i64> %5098, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %14) #6
  %5304 = xor <8 x i64> %5303, %5098
  store <8 x i64> %5304, ptr %14, align 64, !tbaa !26
  %5305 = fsub <8 x double> %5270, %5272
  %5306 = getelementptr inbounds nuw i8, ptr %5260, i64 1920
  %5307 = fsub <8 x double> %5272, %5294
  %5308 = fdiv <8 x double> %5305, %5307
  %5309 = getelementptr inbounds nuw i8, ptr %5260, i64 9568
  %5310 = load ptr, ptr %5309, align 32, !tbaa !66
  %5311 = getelementptr inbounds <8 x double>, ptr %5310, i64 %5274
  %5312 = load <8 x double>, ptr %5311, align 64, !tbaa !26
  %5313 = getelementptr inbounds nuw i8, ptr %5260, i64 9576
  %5314 = load ptr, ptr %5313, align 8, !tbaa !49
  %5315 = getelementptr inbounds <8 x double>, ptr %5314, i64 %5274
  %5316 = load <8 x double>, ptr %5315, align 64, !tbaa !26
  %5317 = icmp eq <8 x i64> %5303, zeroinitializer
  %5318 = select <8 x i1> %5317, <8 x double> %5316, <8 x double> %5312
  store <8 x double> %5318, ptr %5315, align 64, !tbaa !26
  %5319 = load i64, ptr %5273, align 64, !tbaa !31
  %5320 = add nsw i64 %5319, 1
  %5321 = icmp slt i64 %5320, %5268
  br i1 %5321, label %5322, label %5326

5322:                                             ; preds = %5293
  %5323 = getelementptr inbounds nuw i8, ptr %5260, i64 9624
  br label %5366

5324:                                             ; preds = %5366
  %5325 = load i64, ptr %5273, align 64, !tbaa !31
  br label %5326

5326:                                             ; preds = %5324, %5293
  %5327 = phi i64 [ %5319, %5293 ], [ %5325, %5324 ]
  %5328 = phi <8 x double> [ %5312, %5293 ], [ %5371, %5324 ]
  %5329 = icmp sgt i64 %5267, %5327
  br i1 %5329, label %5337, label %5330

5330:                                             ; preds = %5326
  %5331 = getelementptr inbounds nuw i8, ptr %5260, i64 9608
  %5332 = load ptr, ptr %5331, align 8, !tbaa !76
  %5333 = getelementptr inbounds <8 x double>, ptr %5332, i64 %5268
  %5334 = load <8 x double>, ptr %5333, align 64, !tbaa !26
  %5335 = load <8 x double>, ptr %5306, align 64, !tbaa !26
  %5336 = fmul <8 x double> %5334, %5335
  br label %5345

5337:                                             ; preds = %5326
  %5338 = load <8 x double>, ptr %5306, align 64, !tbaa !26
  %5339 = getelementptr inbounds nuw i8, ptr %5260, i64 9608
  %5340 = load ptr, ptr %5339, align 8, !tbaa !76
  %5341 = getelementptr inbounds <8 x double>, ptr %5340, i64 %5268
  %5342 = load <8 x double>, ptr %5341, align 64, !tbaa !26
  %5343 = fsub <8 x double> %5272, %5338
  %5344 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5342, <8 x double> %5343, <8 x double> %5338)
  br label %5345

5345:                                             ; preds = %5337, %5330
  %5346 = phi <8 x double> [ %5336, %5330 ], [ %5344, %5337 ]
  %5347 = load ptr, ptr %5309, align 32, !tbaa !66
  %5348 = getelementptr inbounds <8 x double>, ptr %5347, i64 %5268
  %5349 = load <8 x double>, ptr %5348, align 64, !tbaa !26
  %5350 = load ptr, ptr %5313, align 8, !tbaa !49
  %5351 = getelementptr inbounds <8 x double>, ptr %5350, i64 %5268
  %5352 = fsub <8 x double> %5328, %5349
  %5353 = fsub <8 x double> %5295, %5346
  %5354 = load <8 x double>, ptr %5296, align 64, !tbaa !26
  %5355 = fsub <8 x double> %5354, %5346
  %5356 = fdiv <8 x double> %5353, %5355
  %5357 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5352, <8 x double> %5356, <8 x double> %5349)
  %5358 = load <8 x double>, ptr %5351, align 64, !tbaa !26
  %5359 = select <8 x i1> %5317, <8 x double> %5358, <8 x double> %5357
  store <8 x double> %5359, ptr %5351, align 64, !tbaa !26
  %5360 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5304)
  %5361 = icmp eq i64 %5360, 0
  br i1 %5361, label %5522, label %5362

5362:                                             ; preds = %5345
  %5363 = getelementptr inbounds nuw i8, ptr %5260, i64 9608
  %5364 = getelementptr inbounds nuw i8, ptr %5260, i64 3520
  %5365 = getelementptr inbounds nuw i8, ptr %5260, i64 1216
  br label %5384

5366:                                             ; preds = %5322, %5366
  %5367 = phi i64 [ %5320, %5322 ], [ %5382, %5366 ]
  %5368 = phi <8 x double> [ %5312, %5322 ], [ %5371, %5366 ]
  %5369 = load ptr, ptr %5309, align 32, !tbaa !66
  %5370 = getelementptr inbounds <8 x double>, ptr %5369, i64 %5367
  %5371 = load <8 x double>, ptr %5370, align 64, !tbaa !26
  %5372 = load ptr, ptr %5313, align 8, !tbaa !49
  %5373 = getelementptr inbounds <8 x double>, ptr %5372, i64 %5367
  %5374 = fsub <8 x double> %5368, %5371
  %5375 = load ptr, ptr %5323, align 8, !tbaa !189
  %5376 = getelementptr inbounds <8 x double>, ptr %5375, i64 %5367
  %5377 = load <8 x double>, ptr %5376, align 64, !tbaa !26
  %5378 = fmul <8 x double> %5308, %5377
  %5379 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5374, <8 x double> %5378, <8 x double> %5371)
  %5380 = load <8 x double>, ptr %5373, align 64, !tbaa !26
  %5381 = select <8 x i1> %5317, <8 x double> %5380, <8 x double> %5379
  store <8 x double> %5381, ptr %5373, align 64, !tbaa !26
  %5382 = add nsw i64 %5367, 1
  %5383 = icmp eq i64 %5382, %5268
  br i1 %5383, label %5324, label %5366, !llvm.loop !190

5384:                                             ; preds = %5362, %5519
  %5385 = phi i64 [ 0, %5362 ], [ %5520, %5519 ]
  %5386 = getelementptr inbounds nuw i64, ptr %14, i64 %5385
  %5387 = load i64, ptr %5386, align 8, !tbaa !30
  %5388 = icmp eq i64 %5387, 0
  br i1 %5388, label %5519, label %5389

5389:                                             ; preds = %5384
  %5390 = load i64, ptr %115, align 16, !tbaa !21
  %5391 = load i64, ptr %5273, align 64, !tbaa !31
  %5392 = getelementptr inbounds nuw double, ptr %5306, i64 %5385
  %5393 = load double, ptr %5392, align 8, !tbaa !42
  %5394 = getelementptr inbounds nuw double, ptr %5296, i64 %5385
  %5395 = load double, ptr %5394, align 8, !tbaa !42
  %5396 = add nsw i64 %5390, -1
  %5397 = icmp sgt i64 %5390, %5391
  br i1 %5397, label %5398, label %5519

5398:                                             ; preds = %5389
  %5399 = getelementptr inbounds nuw double, ptr %5271, i64 %5385
  %5400 = load double, ptr %5399, align 8, !tbaa !42
  %5401 = getelementptr inbounds nuw double, ptr %5269, i64 %5385
  %5402 = load double, ptr %5401, align 8, !tbaa !42
  %5403 = load ptr, ptr %5363, align 8
  %5404 = getelementptr i8, ptr %5403, i64 64
  %5405 = getelementptr double, ptr %5404, i64 %5385
  %5406 = fsub double %5400, %5393
  %5407 = getelementptr double, ptr %5403, i64 %5385
  %5408 = fsub double %5402, %5393
  %5409 = load ptr, ptr %5309, align 32, !tbaa !66
  %5410 = getelementptr double, ptr %5409, i64 %5385
  %5411 = load ptr, ptr %5313, align 8, !tbaa !49
  %5412 = getelementptr double, ptr %5411, i64 %5385
  %5413 = getelementptr <8 x double>, ptr %5407, i64 %5396
  br label %5441

5414:                                             ; preds = %5487
  %5415 = getelementptr inbounds nuw double, ptr %5299, i64 %5385
  %5416 = load double, ptr %5415, align 8, !tbaa !42
  %5417 = fcmp ogt double %5416, 0.000000e+00
  %5418 = fcmp ogt double %5498, 0.000000e+00
  %5419 = select i1 %5417, i1 %5418, i1 false
  br i1 %5419, label %5420, label %5519

5420:                                             ; preds = %5414
  %5421 = getelementptr inbounds nuw double, ptr %5364, i64 %5385
  %5422 = getelementptr inbounds nuw double, ptr %5365, i64 %5385
  %5423 = sub i64 %5390, %5391
  %5424 = add i64 %5391, 1
  %5425 = and i64 %5423, 1
  %5426 = icmp eq i64 %5425, 0
  br i1 %5426, label %5436, label %5427

5427:                                             ; preds = %5420
  %5428 = load double, ptr %5421, align 8, !tbaa !42
  %5429 = load double, ptr %5422, align 8, !tbaa !42
  %5430 = fmul double %5498, %5429
  %5431 = fdiv double %5428, %5430
  %5432 = getelementptr <8 x double>, ptr %5412, i64 %5391
  %5433 = load double, ptr %5432, align 8, !tbaa !42
  %5434 = fmul double %5433, %5431
  store double %5434, ptr %5432, align 8, !tbaa !42
  %5435 = add nsw i64 %5391, 1
  br label %5436

5436:                                             ; preds = %5427, %5420
  %5437 = phi i64 [ %5391, %5420 ], [ %5435, %5427 ]
  %5438 = icmp eq i64 %5390, %5424
  br i1 %5438, label %5519, label %5439

5439:                                             ; preds = %5436
  %5440 = getelementptr i8, ptr %5412, i64 64
  br label %5501

5441:                                             ; preds = %5487, %5398
  %5442 = phi double [ 0.000000e+00, %5398 ], [ %5498, %5487 ]
  %5443 = phi i64 [ %5396, %5398 ], [ %5499, %5487 ]
  %5444 = icmp eq i64 %5443, %5396
  br i1 %5444, label %5445, label %5448

5445:                                             ; preds = %5441
  %5446 = load double, ptr %5413, align 8, !tbaa !42
  %5447 = tail call noundef double @llvm.fmuladd.f64(double %5446, double %5406, double %5393)
  br label %5459

5448:                                             ; preds = %5441
  %5449 = getelementptr <8 x double>, ptr %5405, i64 %5443
  %5450 = load double, ptr %5449, align 8, !tbaa !42
  %5451 = tail call noundef double @llvm.fmuladd.f64(double %5450, double %5406, double %5393)
  %5452 = getelementptr <8 x double>, ptr %5407, i64 %5443
  %5453 = load double, ptr %5452, align 8, !tbaa !42
  %5454 = tail call noundef double @llvm.fmuladd.f64(double %5453, double %5406, double %5393)
  %5455 = tail call noundef double @llvm.fmuladd.f64(double %5450, double %5408, double %5393)
  %5456 = fcmp ult double %5455, %5451
  br i1 %5456, label %5457, label %5459

5457:                                             ; preds = %5448
  %5458 = add nsw i64 %5443, 1
  br label %5459

5459:                                             ; preds = %5457, %5448, %5445
  %5460 = phi double [ %5454, %5457 ], [ %5454, %5448 ], [ %5447, %5445 ]
  %5461 = phi double [ %5451, %5457 ], [ %5451, %5448 ], [ %5395, %5445 ]
  %5462 = phi i64 [ %5458, %5457 ], [ %5443, %5448 ], [ %5396, %5445 ]
  %5463 = icmp sgt i64 %5462, %5391
  br i1 %5463, label %5464, label %5487

5464:                                             ; preds = %5459
  %5465 = load ptr, ptr %5309, align 32
  %5466 = getelementptr double, ptr %5465, i64 %5385
  br label %5467

5467:                                             ; preds = %5482, %5464
  %5468 = phi i64 [ %5462, %5464 ], [ %5485, %5482 ]
  %5469 = phi double [ 0.000000e+00, %5464 ], [ %5484, %5482 ]
  %5470 = phi double [ %5461, %5464 ], [ %5483, %5482 ]
  %5471 = getelementptr <8 x double>, ptr %5407, i64 %5468
  %5472 = load double, ptr %5471, align 8, !tbaa !42
  %5473 = tail call noundef double @llvm.fmuladd.f64(double %5472, double %5408, double %5393)
  %5474 = fcmp ogt double %5473, %5460
  br i1 %5474, label %5475, label %5487

5475:                                             ; preds = %5467
  %5476 = fcmp ogt double %5470, %5473
  br i1 %5476, label %5477, label %5482

5477:                                             ; preds = %5475
  %5478 = getelementptr <8 x double>, ptr %5466, i64 %5468
  %5479 = load double, ptr %5478, align 8, !tbaa !42
  %5480 = fsub double %5470, %5473
  %5481 = tail call double @llvm.fmuladd.f64(double %5479, double %5480, double %5469)
  br label %5482

5482:                                             ; preds = %5477, %5475
  %5483 = phi double [ %5473, %5477 ], [ %5470, %5475 ]
  %5484 = phi double [ %5481, %5477 ], [ %5469, %5475 ]
  %5485 = add nsw i64 %5468, -1
  %5486 = icmp sgt i64 %5485, %5391
  br i1 %5486, label %5467, label %5487, !llvm.loop !191

5487:                                             ; preds = %5482, %5467, %5459
  %5488 = phi double [ %5461, %5459 ], [ %5470, %5467 ], [ %5483, %5482 ]
  %5489 = phi double [ 0.000000e+00, %5459 ], [ %5469, %5467 ], [ %5484, %5482 ]
  %5490 = phi i64 [ %5462, %5459 ], [ %5468, %5467 ], [ %5391, %5482 ]
  %5491 = getelementptr <8 x double>, ptr %5410, i64 %5490
  %5492 = load double, ptr %5491, align 8, !tbaa !42
  %5493 = fsub double %5488, %5460
  %5494 = tail call double @llvm.fmuladd.f64(double %5492, double %5493, double %5489)
  %5495 = fsub double %5461, %5460
  %5496 = fdiv double %5494, %5495
  %5497 = getelementptr <8 x double>, ptr %5412, i64 %5443
  store double %5496, ptr %5497, align 8, !tbaa !42
  %5498 = fadd double %5442, %5494
  %5499 = add nsw i64 %5443, -1
  %5500 = icmp sgt i64 %5443, %5391
  br i1 %5500, label %5441, label %5414, !llvm.loop !192

5501:                                             ; preds = %5501, %5439
  %5502 = phi i64 [ %5437, %5439 ], [ %5517, %5501 ]
  %5503 = load double, ptr %5421, align 8, !tbaa !42
  %5504 = load double, ptr %5422, align 8, !tbaa !42
  %5505 = fmul double %5498, %5504
  %5506 = fdiv double %5503, %5505
  %5507 = getelementptr <8 x double>, ptr %5412, i64 %5502
  %5508 = load double, ptr %5507, align 8, !tbaa !42
  %5509 = fmul double %5508, %5506
  store double %5509, ptr %5507, align 8, !tbaa !42
  %5510 = load double, ptr %5421, align 8, !tbaa !42
  %5511 = load double, ptr %5422, align 8, !tbaa !42
  %5512 = fmul double %5498, %5511
  %5513 = fdiv double %5510, %5512
  %5514 = getelementptr <8 x double>, ptr %5440, i64 %5502
  %5515 = load double, ptr %5514, align 8, !tbaa !42
  %5516 = fmul double %5515, %5513
  store double %5516, ptr %5514, align 8, !tbaa !42
  %5517 = add nsw i64 %5502, 2
  %5518 = icmp eq i64 %5517, %5390
  br i1 %5518, label %5519, label %5501, !llvm.loop !193

5519:                                             ; preds = %5436, %5501, %5414, %5389, %5384
  %5520 = add nuw nsw i64 %5385, 1
  %5521 = icmp eq i64 %5520, 8
  br i1 %5521, label %5522, label %5384, !llvm.loop !194

5522:                                             ; preds = %5519, %5345
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %14) #6
  br label %5523

5523:                                             ; preds = %5257, %5522
  %5524 = load <8 x i64>, ptr %106, align 64, !tbaa !26
  %5525 = and <8 x i64> %5524, %5256
  %5526 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5525)
  %5527 = icmp eq i64 %5526, 0
  %5528 = getelementptr inbounds nuw i8, ptr %5260, i64 9544
  br i1 %5527, label %5529, label %5547

5529:                                             ; preds = %5523
  %5530 = getelementptr inbounds nuw i8, ptr %5260, i64 9552
  %5531 = getelementptr inbounds nuw i8, ptr %5260, i64 9560
  %5532 = load ptr, ptr %5531, align 8, !tbaa !36
  %5533 = load ptr, ptr %5530, align 8, !tbaa !36
  store ptr %5533, ptr %5531, align 8, !tbaa !36
  %5534 = load ptr, ptr %5528, align 8, !tbaa !36
  store ptr %5534, ptr %5530, align 8, !tbaa !36
  store ptr %5532, ptr %5528, align 8, !tbaa !36
  %5535 = getelementptr inbounds nuw i8, ptr %5260, i64 9640
  %5536 = getelementptr inbounds nuw i8, ptr %5260, i64 9648
  %5537 = getelementptr inbounds nuw i8, ptr %5260, i64 9656
  %5538 = load ptr, ptr %5537, align 8, !tbaa !36
  %5539 = load ptr, ptr %5536, align 8, !tbaa !36
  store ptr %5539, ptr %5537, align 8, !tbaa !36
  %5540 = load ptr, ptr %5535, align 8, !tbaa !36
  store ptr %5540, ptr %5536, align 8, !tbaa !36
  store ptr %5538, ptr %5535, align 8, !tbaa !36
  %5541 = getelementptr inbounds nuw i8, ptr %5260, i64 9688
  %5542 = getelementptr inbounds nuw i8, ptr %5260, i64 9696
  %5543 = getelementptr inbounds nuw i8, ptr %5260, i64 9704
  %5544 = load ptr, ptr %5543, align 8, !tbaa !36
  %5545 = load ptr, ptr %5542, align 8, !tbaa !36
  store ptr %5545, ptr %5543, align 8, !tbaa !36
  %5546 = load ptr, ptr %5541, align 8, !tbaa !36
  store ptr %5546, ptr %5542, align 8, !tbaa !36
  store ptr %5544, ptr %5541, align 8, !tbaa !36
  br label %5612

5547:                                             ; preds = %5523
  %5548 = load ptr, ptr %5528, align 8, !tbaa !86
  %5549 = getelementptr inbounds nuw i8, ptr %5260, i64 9552
  %5550 = load ptr, ptr %5549, align 16, !tbaa !47
  %5551 = getelementptr inbounds nuw i8, ptr %5260, i64 9560
  %5552 = load ptr, ptr %5551, align 8, !tbaa !65
  %5553 = load i64, ptr %115, align 16, !tbaa !21
  %5554 = icmp sgt i64 %5553, 0
  br i1 %5554, label %5555, label %5568

5555:                                             ; preds = %5547, %5555
  %5556 = phi i64 [ %5566, %5555 ], [ 0, %5547 ]
  %5557 = getelementptr inbounds nuw <8 x double>, ptr %5552, i64 %5556
  %5558 = getelementptr inbounds nuw <8 x double>, ptr %5550, i64 %5556
  %5559 = load <8 x double>, ptr %5558, align 64, !tbaa !26
  %5560 = load <8 x double>, ptr %5557, align 64, !tbaa !26
  %5561 = select <8 x i1> %5228, <8 x double> %5560, <8 x double> %5559
  store <8 x double> %5561, ptr %5557, align 64, !tbaa !26
  %5562 = getelementptr inbounds nuw <8 x double>, ptr %5548, i64 %5556
  %5563 = load <8 x double>, ptr %5562, align 64, !tbaa !26
  %5564 = load <8 x double>, ptr %5558, align 64, !tbaa !26
  %5565 = select <8 x i1> %5228, <8 x double> %5564, <8 x double> %5563
  store <8 x double> %5565, ptr %5558, align 64, !tbaa !26
  %5566 = add nuw nsw i64 %5556, 1
  %5567 = icmp eq i64 %5566, %5553
  br i1 %5567, label %5568, label %5555, !llvm.loop !195

5568:                                             ; preds = %5555, %5547
  %5569 = getelementptr inbounds nuw i8, ptr %5260, i64 9640
  %5570 = load ptr, ptr %5569, align 8, !tbaa !171
  %5571 = getelementptr inbounds nuw i8, ptr %5260, i64 9648
  %5572 = load ptr, ptr %5571, align 16, !tbaa !51
  %5573 = getelementptr inbounds nuw i8, ptr %5260, i64 9656
  %5574 = load ptr, ptr %5573, align 8, !tbaa !62
  %5575 = load i64, ptr %116, align 8, !tbaa !22
  %5576 = icmp sgt i64 %5575, 0
  br i1 %5576, label %5577, label %5612

5577:                                             ; preds = %5568, %5577
  %5578 = phi i64 [ %5588, %5577 ], [ 0, %5568 ]
  %5579 = getelementptr inbounds nuw <8 x double>, ptr %5574, i64 %5578
  %5580 = getelementptr inbounds nuw <8 x double>, ptr %5572, i64 %5578
  %5581 = load <8 x double>, ptr %5580, align 64, !tbaa !26
  %5582 = load <8 x double>, ptr %5579, align 64, !tbaa !26
  %5583 = select <8 x i1> %5228, <8 x double> %5582, <8 x double> %5581
  store <8 x double> %5583, ptr %5579, align 64, !tbaa !26
  %5584 = getelementptr inbounds nuw <8 x double>, ptr %5570, i64 %5578
  %5585 = load <8 x double>, ptr %5584, align 64, !tbaa !26
  %5586 = load <8 x double>, ptr %5580, align 64, !tbaa !26
  %5587 = select <8 x i1> %5228, <8 x double> %5586, <8 x double> %5585
  store <8 x double> %5587, ptr %5580, align 64, !tbaa !26
  %5588 = add nuw nsw i64 %5578, 1
  %5589 = icmp eq i64 %5588, %5575
  br i1 %5589, label %5590, label %5577, !llvm.loop !195

5590:                                             ; preds = %5577
  %5591 = load i64, ptr %116, align 8, !tbaa !22
  %5592 = getelementptr inbounds nuw i8, ptr %5260, i64 9688
  %5593 = load ptr, ptr %5592, align 8, !tbaa !128
  %5594 = getelementptr inbounds nuw i8, ptr %5260, i64 9696
  %5595 = load ptr, ptr %5594, align 32, !tbaa !50
  %5596 = getelementptr inbounds nuw i8, ptr %5260, i64 9704
  %5597 = load ptr, ptr %5596, align 8, !tbaa !61
  %5598 = icmp sgt i64 %5591, 0
  br i1 %5598, label %5599, label %5612

5599:                                             ; preds = %5590, %5599
  %5600 = phi i64 [ %5610, %5599 ], [ 0, %5590 ]
  %5601 = getelementptr inbounds nuw <8 x double>, ptr %5597, i64 %5600
  %5602 = getelementptr inbounds nuw <8 x double>, ptr %5595, i64 %5600
  %5603 = load <8 x double>, ptr %5602, align 64, !tbaa !26
  %5604 = load <8 x double>, ptr %5601, align 64, !tbaa !26
  %5605 = select <8 x i1> %5228, <8 x double> %5604, <8 x double> %5603
  store <8 x double> %5605, ptr %5601, align 64, !tbaa !26
  %5606 = getelementptr inbounds nuw <8 x double>, ptr %5593, i64 %5600
  %5607 = load <8 x double>, ptr %5606, align 64, !tbaa !26
  %5608 = load <8 x double>, ptr %5602, align 64, !tbaa !26
  %5609 = select <8 x i1> %5228, <8 x double> %5608, <8 x double> %5607
  store <8 x double> %5609, ptr %5602, align 64, !tbaa !26
  %5610 = add nuw nsw i64 %5600, 1
  %5611 = icmp eq i64 %5610, %5591
  br i1 %5611, label %5612, label %5599, !llvm.loop !195

5612:                                             ; preds = %5599, %5568, %5590, %5529
  %5613 = getelementptr inbounds nuw i8, ptr %5260, i64 5120
  %5614 = getelementptr inbounds nuw i8, ptr %5260, i64 4224
  %5615 = getelementptr inbounds nuw i8, ptr %5260, i64 3328
  br label %5631

5616:                                             ; preds = %5631
  %5617 = getelementptr inbounds nuw i8, ptr %5260, i64 9344
  %5618 = getelementptr inbounds nuw i8, ptr %5260, i64 6528
  %5619 = load <8 x double>, ptr %5618, align 64, !tbaa !26
  %5620 = fcmp ogt <8 x double> %5619, zeroinitializer
  %5621 = load <8 x double>, ptr %135, align 64, !tbaa !26
  %5622 = fcmp une <8 x double> %5621, splat (double 2.000000e+00)
  %5623 = and <8 x i1> %5620, %5622
  %5624 = select <8 x i1> %5623, <8 x i64> %5098, <8 x i64> zeroinitializer
  %5625 = load <8 x i64>, ptr %5617, align 64, !tbaa !26
  %5626 = and <8 x i64> %5625, %5256
  %5627 = or <8 x i64> %5624, %5626
  store <8 x i64> %5627, ptr %5617, align 64, !tbaa !26
  %5628 = add nuw nsw i64 %5258, 1
  %5629 = load i64, ptr %153, align 8, !tbaa !20
  %5630 = icmp slt i64 %5628, %5629
  br i1 %5630, label %5257, label %5643, !llvm.loop !196

5631:                                             ; preds = %5612, %5631
  %5632 = phi i64 [ 0, %5612 ], [ %5641, %5631 ]
  %5633 = getelementptr inbounds nuw [14 x <8 x double>], ptr %5613, i64 0, i64 %5632
  %5634 = getelementptr inbounds nuw [14 x <8 x double>], ptr %5614, i64 0, i64 %5632
  %5635 = load <8 x double>, ptr %5634, align 64, !tbaa !26
  %5636 = load <8 x double>, ptr %5633, align 64, !tbaa !26
  %5637 = select <8 x i1> %5228, <8 x double> %5636, <8 x double> %5635
  store <8 x double> %5637, ptr %5633, align 64, !tbaa !26
  %5638 = getelementptr inbounds nuw [14 x <8 x double>], ptr %5615, i64 0, i64 %5632
  %5639 = load <8 x double>, ptr %5638, align 64, !tbaa !26
  %5640 = select <8 x i1> %5228, <8 x double> %5635, <8 x double> %5639
  store <8 x double> %5640, ptr %5634, align 64, !tbaa !26
  %5641 = add nuw nsw i64 %5632, 1
  %5642 = icmp eq i64 %5641, 14
  br i1 %5642, label %5616, label %5631, !llvm.loop !197

5643:                                             ; preds = %5616
  %5644 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %5645 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %5646 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5647 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %5648 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %5649 = fdiv <8 x double> %5646, %4783
  %5650 = icmp sgt i64 %5629, 0
  br label %5651

5651:                                             ; preds = %5227, %5643
  %5652 = phi <8 x double> [ %5649, %5643 ], [ %4793, %5227 ]
  %5653 = phi i1 [ %5650, %5643 ], [ false, %5227 ]
  %5654 = phi <8 x double> [ %5648, %5643 ], [ %4772, %5227 ]
  %5655 = phi <8 x double> [ %5647, %5643 ], [ %5086, %5227 ]
  %5656 = phi <8 x double> [ %5645, %5643 ], [ %4789, %5227 ]
  %5657 = phi <8 x double> [ %5644, %5643 ], [ %4787, %5227 ]
  %5658 = load <8 x double>, ptr %133, align 64, !tbaa !26
  %5659 = fadd <8 x double> %5658, %5657
  %5660 = select <8 x i1> %5228, <8 x double> %5658, <8 x double> %5659
  store <8 x double> %5660, ptr %133, align 64, !tbaa !26
  %5661 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %5662 = select <8 x i1> %5228, <8 x double> %5661, <8 x double> %5657
  store <8 x double> %5662, ptr %148, align 64, !tbaa !26
  %5663 = load <8 x double>, ptr %119, align 64, !tbaa !26
  %5664 = fadd <8 x double> %5663, splat (double 1.000000e+00)
  %5665 = select <8 x i1> %5228, <8 x double> %5663, <8 x double> %5664
  store <8 x double> %5665, ptr %119, align 64, !tbaa !26
  %5666 = load <8 x double>, ptr %121, align 64, !tbaa !26
  %5667 = fcmp olt <8 x double> %5666, %5657
  %5668 = select <8 x i1> %5228, <8 x i1> splat (i1 true), <8 x i1> %5667
  %5669 = select <8 x i1> %5668, <8 x double> %5666, <8 x double> %5657
  store <8 x double> %5669, ptr %121, align 64, !tbaa !26
  %5670 = fcmp une <8 x double> %5656, zeroinitializer
  %5671 = fcmp ueq <8 x double> %4782, zeroinitializer
  %5672 = or <8 x i1> %5671, %5670
  %5673 = fcmp olt <8 x double> %5652, splat (double 1.800000e+00)
  %5674 = select <8 x i1> %5673, <8 x double> %5652, <8 x double> splat (double 1.800000e+00)
  %5675 = select <8 x i1> %5672, <8 x double> splat (double 1.800000e+00), <8 x double> %5674
  %5676 = fcmp ogt <8 x double> %5675, splat (double 2.000000e-01)
  %5677 = select <8 x i1> %5676, <8 x double> %5675, <8 x double> splat (double 2.000000e-01)
  %5678 = fmul <8 x double> %5657, %5677
  %5679 = fmul <8 x double> %5657, splat (double 4.000000e+00)
  %5680 = fcmp olt <8 x double> %5655, %5679
  %5681 = select <8 x i1> %5680, <8 x double> %5655, <8 x double> %5679
  %5682 = fcmp ogt <8 x double> %5678, %5681
  %5683 = select <8 x i1> %5682, <8 x double> %5678, <8 x double> %5681
  %5684 = select <8 x i1> %5228, <8 x double> %5655, <8 x double> zeroinitializer
  store <8 x double> %5684, ptr %156, align 64, !tbaa !26
  %5685 = select <8 x i1> %5228, <8 x double> %5654, <8 x double> zeroinitializer
  store <8 x double> %5685, ptr %158, align 64, !tbaa !26
  %5686 = load <8 x i64>, ptr %149, align 64, !tbaa !26
  %5687 = and <8 x i64> %5686, %5256
  store <8 x i64> %5687, ptr %149, align 64, !tbaa !26
  %5688 = load <8 x i64>, ptr %150, align 64, !tbaa !26
  %5689 = and <8 x i64> %5688, %5256
  store <8 x i64> %5689, ptr %150, align 64, !tbaa !26
  %5690 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %5691 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %5692 = select <8 x i1> %5228, <8 x double> %5691, <8 x double> %5690
  store <8 x double> %5692, ptr %143, align 64, !tbaa !26
  br i1 %5653, label %5693, label %5977

5693:                                             ; preds = %5651, %5970
  %5694 = phi i64 [ %5972, %5970 ], [ 0, %5651 ]
  %5695 = phi <8 x double> [ %5971, %5970 ], [ %5683, %5651 ]
  %5696 = load ptr, ptr %126, align 8, !tbaa !28
  %5697 = getelementptr inbounds nuw %struct.Piece, ptr %5696, i64 %5694
  %5698 = getelementptr inbounds nuw i8, ptr %5697, i64 4288
  %5699 = load <8 x double>, ptr %5698, align 64, !tbaa !26
  %5700 = getelementptr inbounds nuw i8, ptr %5697, i64 1856
  %5701 = load <8 x double>, ptr %5700, align 64, !tbaa !26
  %5702 = fmul <8 x double> %5701, splat (double 1.001000e+00)
  %5703 = fcmp ole <8 x double> %5699, %5702
  %5704 = getelementptr inbounds nuw i8, ptr %5697, i64 1984
  %5705 = load <8 x double>, ptr %5704, align 64, !tbaa !26
  %5706 = getelementptr inbounds nuw i8, ptr %5697, i64 4544
  %5707 = load <8 x double>, ptr %5706, align 64, !tbaa !26
  %5708 = fsub <8 x double> %5705, %5707
  %5709 = fmul <8 x double> %5705, splat (double 1.000000e-04)
  %5710 = fcmp ole <8 x double> %5708, %5709
  %5711 = getelementptr inbounds nuw i8, ptr %5697, i64 9280
  %5712 = load <8 x i64>, ptr %5711, align 64, !tbaa !26
  %5713 = and <8 x i64> %5712, %5098
  %5714 = getelementptr inbounds nuw i8, ptr %5697, i64 8576
  %5715 = load <8 x double>, ptr %5714, align 64, !tbaa !26
  %5716 = fcmp oeq <8 x double> %5715, zeroinitializer
  %5717 = and <8 x i1> %5703, %5716
  %5718 = fcmp oeq <8 x double> %5715, splat (double 1.000000e+00)
  %5719 = and <8 x i1> %5710, %5718
  %5720 = or <8 x i1> %5717, %5719
  %5721 = select <8 x i1> %5720, <8 x i64> %5713, <8 x i64> zeroinitializer
  %5722 = fadd <8 x double> %5715, splat (double 1.000000e+00)
  %5723 = icmp eq <8 x i64> %5721, zeroinitializer
  %5724 = select <8 x i1> %5723, <8 x double> %5715, <8 x double> %5722
  store <8 x double> %5724, ptr %5714, align 64, !tbaa !26
  %5725 = getelementptr inbounds nuw i8, ptr %5697, i64 9344
  %5726 = load <8 x i64>, ptr %5725, align 64, !tbaa !26
  %5727 = or <8 x i64> %5721, %5726
  store <8 x i64> %5727, ptr %5725, align 64, !tbaa !26
  %5728 = getelementptr inbounds nuw i8, ptr %5697, i64 1280
  %5729 = load <8 x double>, ptr %5728, align 64, !tbaa !26
  %5730 = getelementptr inbounds nuw i8, ptr %5697, i64 6464
  %5731 = load <8 x double>, ptr %5730, align 64, !tbaa !26
  %5732 = getelementptr inbounds nuw i8, ptr %5697, i64 6528
  %5733 = load <8 x double>, ptr %5732, align 64, !tbaa !26
  %5734 = fadd <8 x double> %5731, %5733
  %5735 = fcmp ogt <8 x double> %5734, zeroinitializer
  %5736 = xor <8 x i64> %5712, splat (i64 -1)
  %5737 = and <8 x i64> %5098, %5736
  %5738 = fcmp une <8 x double> %5729, zeroinitializer
  %5739 = or <8 x i1> %5738, %5735
  %5740 = getelementptr inbounds nuw i8, ptr %5697, i64 4352
  %5741 = load <8 x double>, ptr %5740, align 64, !tbaa !26
  %5742 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %5743 = fmul <8 x double> %5729, %5742
  %5744 = fcmp ogt <8 x double> %5743, splat (double 0x3E7AD7F29ABCAF48)
  %5745 = select <8 x i1> %5744, <8 x double> %5743, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5746 = fcmp ole <8 x double> %5741, %5745
  %5747 = select <8 x i1> %5746, <8 x i1> %5739, <8 x i1> zeroinitializer
  %5748 = select <8 x i1> %5747, <8 x i64> %5737, <8 x i64> zeroinitializer
  %5749 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5748)
  %5750 = icmp eq i64 %5749, 0
  br i1 %5750, label %5970, label %5751

5751:                                             ; preds = %5693
  %5752 = load i64, ptr %115, align 16, !tbaa !21
  %5753 = load i64, ptr %116, align 8, !tbaa !22
  %5754 = getelementptr inbounds nuw i8, ptr %5697, i64 4224
  %5755 = getelementptr inbounds nuw i8, ptr %5697, i64 5056
  %5756 = load <8 x double>, ptr %5755, align 64, !tbaa !26
  %5757 = getelementptr inbounds nuw i8, ptr %5697, i64 6400
  %5758 = load <8 x double>, ptr %5757, align 64, !tbaa !26
  %5759 = getelementptr inbounds nuw i8, ptr %5697, i64 1216
  %5760 = load <8 x double>, ptr %5759, align 64, !tbaa !26
  %5761 = getelementptr inbounds nuw i8, ptr %5697, i64 9576
  %5762 = load ptr, ptr %5761, align 8, !tbaa !49
  %5763 = add nsw i64 %5752, -1
  %5764 = getelementptr inbounds <8 x double>, ptr %5762, i64 %5763
  %5765 = load <8 x double>, ptr %5764, align 64, !tbaa !26
  %5766 = fmul <8 x double> %5760, %5765
  %5767 = fneg <8 x double> %5741
  %5768 = fdiv <8 x double> %5767, %5766
  %5769 = fcmp ogt <8 x double> %5768, splat (double 0x3E7AD7F29ABCAF48)
  %5770 = select <8 x i1> %5769, <8 x double> %5768, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5771 = load <8 x double>, ptr %5697, align 64, !tbaa !26
  %5772 = fsub <8 x double> %5771, %5770
  %5773 = getelementptr inbounds nuw i8, ptr %5697, i64 2944
  %5774 = load <8 x double>, ptr %5773, align 64, !tbaa !26
  %5775 = getelementptr inbounds nuw i8, ptr %5697, i64 3008
  %5776 = load <8 x double>, ptr %5775, align 64, !tbaa !26
  %5777 = getelementptr inbounds nuw i8, ptr %5697, i64 3072
  %5778 = load <8 x double>, ptr %5777, align 64, !tbaa !26
  %5779 = getelementptr inbounds nuw i8, ptr %5697, i64 3136
  %5780 = load <8 x double>, ptr %5779, align 64, !tbaa !26
  %5781 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5772, <8 x double> %5780, <8 x double> %5778)
  %5782 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5772, <8 x double> %5781, <8 x double> %5776)
  %5783 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5772, <8 x double> %5782, <8 x double> %5774)
  %5784 = fsub <8 x double> %5756, %5783
  %5785 = getelementptr inbounds nuw i8, ptr %5697, i64 9552
  %5786 = load ptr, ptr %5785, align 16, !tbaa !47
  %5787 = getelementptr inbounds <8 x double>, ptr %5786, i64 %5763
  %5788 = load <8 x double>, ptr %5787, align 64, !tbaa !26
  %5789 = getelementptr inbounds nuw i8, ptr %5697, i64 9560
  %5790 = load ptr, ptr %5789, align 8, !tbaa !65
  %5791 = getelementptr inbounds <8 x double>, ptr %5790, i64 %5763
  %5792 = load <8 x double>, ptr %5791, align 64, !tbaa !26
  %5793 = sitofp i64 %5753 to double
  %5794 = insertelement <8 x double> poison, double %5793, i64 0
  %5795 = shufflevector <8 x double> %5794, <8 x double> poison, <8 x i32> zeroinitializer
  %5796 = fdiv <8 x double> %5770, %5795
  %5797 = icmp sgt i64 %5752, 1
  br i1 %5797, label %5798, label %5803

5798:                                             ; preds = %5751
  %5799 = getelementptr inbounds nuw i8, ptr %5697, i64 9472
  %5800 = getelementptr inbounds nuw i8, ptr %5697, i64 1920
  %5801 = getelementptr inbounds nuw i8, ptr %5697, i64 9608
  %5802 = icmp eq <8 x i64> %5748, zeroinitializer
  br label %5811

5803:                                             ; preds = %5834, %5751
  %5804 = icmp sgt i64 %5753, 0
  br i1 %5804, label %5805, label %5868

5805:                                             ; preds = %5803
  %5806 = getelementptr inbounds nuw i8, ptr %5697, i64 9696
  %5807 = icmp eq <8 x i64> %5748, zeroinitializer
  %5808 = getelementptr inbounds nuw i8, ptr %5697, i64 9704
  %5809 = getelementptr inbounds nuw i8, ptr %5697, i64 9648
  %5810 = getelementptr inbounds nuw i8, ptr %5697, i64 9656
  br label %5939

5811:                                             ; preds = %5798, %5834
  %5812 = phi <8 x double> [ %5783, %5798 ], [ %5835, %5834 ]
  %5813 = phi <8 x double> [ %5788, %5798 ], [ %5843, %5834 ]
  %5814 = phi <8 x double> [ %5792, %5798 ], [ %5846, %5834 ]
  %5815 = phi <8 x double> [ %5765, %5798 ], [ %5849, %5834 ]
  %5816 = phi i64 [ %5763, %5798 ], [ %5841, %5834 ]
  %5817 = load i64, ptr %5799, align 64, !tbaa !31
  %5818 = icmp slt i64 %5816, %5817
  br i1 %5818, label %5819, label %5825

5819:                                             ; preds = %5811
  %5820 = load ptr, ptr %5801, align 8, !tbaa !76
  %5821 = getelementptr inbounds nuw <8 x double>, ptr %5820, i64 %5816
  %5822 = load <8 x double>, ptr %5821, align 64, !tbaa !26
  %5823 = load <8 x double>, ptr %5800, align 64, !tbaa !26
  %5824 = fmul <8 x double> %5822, %5823
  br label %5834

5825:                                             ; preds = %5811
  %5826 = load <8 x double>, ptr %5800, align 64, !tbaa !26
  %5827 = load ptr, ptr %5801, align 8, !tbaa !76
  %5828 = getelementptr inbounds nuw <8 x double>, ptr %5827, i64 %5816
  %5829 = load <8 x double>, ptr %5828, align 64, !tbaa !26
  %5830 = fsub <8 x double> %5783, %5826
  %5831 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5829, <8 x double> %5830, <8 x double> %5826)
  %5832 = fsub <8 x double> %5756, %5826
  %5833 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5829, <8 x double> %5832, <8 x double> %5826)
  br label %5834

5834:                                             ; preds = %5825, %5819
  %5835 = phi <8 x double> [ %5824, %5819 ], [ %5831, %5825 ]
  %5836 = phi <8 x double> [ %5824, %5819 ], [ %5833, %5825 ]
  %5837 = fsub <8 x double> %5836, %5835
  %5838 = fsub <8 x double> %5812, %5835
  %5839 = fdiv <8 x double> %5837, %5838
  %5840 = load ptr, ptr %5785, align 16, !tbaa !47
  %5841 = add nsw i64 %5816, -1
  %5842 = getelementptr inbounds nuw <8 x double>, ptr %5840, i64 %5841
  %5843 = load <8 x double>, ptr %5842, align 64, !tbaa !26
  %5844 = load ptr, ptr %5789, align 8, !tbaa !65
  %5845 = getelementptr inbounds nuw <8 x double>, ptr %5844, i64 %5841
  %5846 = load <8 x double>, ptr %5845, align 64, !tbaa !26
  %5847 = load ptr, ptr %5761, align 8, !tbaa !49
  %5848 = getelementptr inbounds nuw <8 x double>, ptr %5847, i64 %5841
  %5849 = load <8 x double>, ptr %5848, align 64, !tbaa !26
  %5850 = getelementptr inbounds nuw <8 x double>, ptr %5840, i64 %5816
  %5851 = fsub <8 x double> %5843, %5813
  %5852 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5851, <8 x double> %5839, <8 x double> %5813)
  %5853 = load <8 x double>, ptr %5850, align 64, !tbaa !26
  %5854 = select <8 x i1> %5802, <8 x double> %5853, <8 x double> %5852
  store <8 x double> %5854, ptr %5850, align 64, !tbaa !26
  %5855 = load ptr, ptr %5789, align 8, !tbaa !65
  %5856 = getelementptr inbounds nuw <8 x double>, ptr %5855, i64 %5816
  %5857 = fsub <8 x double> %5846, %5814
  %5858 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5857, <8 x double> %5839, <8 x double> %5814)
  %5859 = load <8 x double>, ptr %5856, align 64, !tbaa !26
  %5860 = select <8 x i1> %5802, <8 x double> %5859, <8 x double> %5858
  store <8 x double> %5860, ptr %5856, align 64, !tbaa !26
  %5861 = load ptr, ptr %5761, align 8, !tbaa !49
  %5862 = getelementptr inbounds nuw <8 x double>, ptr %5861, i64 %5816
  %5863 = fsub <8 x double> %5849, %5815
  %5864 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5863, <8 x double> %5839, <8 x double> %5815)
  %5865 = load <8 x double>, ptr %5862, align 64, !tbaa !26
  %5866 = select <8 x i1> %5802, <8 x double> %5865, <8 x double> %5864
  store <8 x double> %5866, ptr %5862, align 64, !tbaa !26
  %5867 = icmp sgt i64 %5816, 1
  br i1 %5867, label %5811, label %5803, !llvm.loop !198

5868:                                             ; preds = %5939, %5803
  %5869 = getelementptr inbounds nuw i8, ptr %5697, i64 9696
  %5870 = load ptr, ptr %5869, align 32, !tbaa !50
  %5871 = getelementptr inbounds <8 x double>, ptr %5870, i64 %5753
  %5872 = getelementptr inbounds nuw i8, ptr %5697, i64 1792
  %5873 = load <8 x double>, ptr %5872, align 64, !tbaa !26
  %5874 = load <8 x double>, ptr %5871, align 64, !tbaa !26
  %5875 = icmp eq <8 x i64> %5748, zeroinitializer
  %5876 = select <8 x i1> %5875, <8 x double> %5874, <8 x double> %5873
  store <8 x double> %5876, ptr %5871, align 64, !tbaa !26
  %5877 = getelementptr inbounds nuw i8, ptr %5697, i64 9704
  %5878 = load ptr, ptr %5877, align 8, !tbaa !61
  %5879 = getelementptr inbounds <8 x double>, ptr %5878, i64 %5753
  %5880 = load <8 x double>, ptr %5872, align 64, !tbaa !26
  %5881 = load <8 x double>, ptr %5879, align 64, !tbaa !26
  %5882 = select <8 x i1> %5875, <8 x double> %5881, <8 x double> %5880
  store <8 x double> %5882, ptr %5879, align 64, !tbaa !26
  %5883 = getelementptr inbounds nuw i8, ptr %5697, i64 5120
  %5884 = fneg <8 x double> %5784
  %5885 = getelementptr inbounds nuw i8, ptr %5697, i64 1152
  %5886 = load <8 x double>, ptr %5754, align 64, !tbaa !26
  %5887 = select <8 x i1> %5875, <8 x double> %5886, <8 x double> %5772
  store <8 x double> %5887, ptr %5754, align 64, !tbaa !26
  %5888 = getelementptr inbounds nuw i8, ptr %5697, i64 4288
  %5889 = load <8 x double>, ptr %5888, align 64, !tbaa !26
  %5890 = select <8 x i1> %5875, <8 x double> %5889, <8 x double> %5783
  store <8 x double> %5890, ptr %5888, align 64, !tbaa !26
  %5891 = getelementptr inbounds nuw i8, ptr %5697, i64 5056
  %5892 = load <8 x double>, ptr %5891, align 64, !tbaa !26
  %5893 = select <8 x i1> %5875, <8 x double> %5892, <8 x double> %5783
  store <8 x double> %5893, ptr %5891, align 64, !tbaa !26
  %5894 = getelementptr inbounds nuw i8, ptr %5697, i64 4416
  %5895 = load <8 x double>, ptr %5894, align 64, !tbaa !26
  %5896 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5884, <8 x double> %5766, <8 x double> %5895)
  %5897 = select <8 x i1> %5875, <8 x double> %5895, <8 x double> %5896
  store <8 x double> %5897, ptr %5894, align 64, !tbaa !26
  %5898 = getelementptr inbounds nuw i8, ptr %5697, i64 4352
  %5899 = load <8 x double>, ptr %5898, align 64, !tbaa !26
  %5900 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5784, <8 x double> %5766, <8 x double> %5899)
  %5901 = select <8 x i1> %5875, <8 x double> %5899, <8 x double> %5900
  store <8 x double> %5901, ptr %5898, align 64, !tbaa !26
  %5902 = getelementptr inbounds nuw i8, ptr %5697, i64 4672
  %5903 = load <8 x double>, ptr %5902, align 64, !tbaa !26
  %5904 = load <8 x double>, ptr %5885, align 64, !tbaa !26
  %5905 = fneg <8 x double> %5904
  %5906 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5905, <8 x double> %5758, <8 x double> %5788)
  %5907 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5784, <8 x double> %5906, <8 x double> %5903)
  %5908 = select <8 x i1> %5875, <8 x double> %5903, <8 x double> %5907
  store <8 x double> %5908, ptr %5902, align 64, !tbaa !26
  %5909 = load <8 x double>, ptr %5883, align 64, !tbaa !26
  %5910 = select <8 x i1> %5875, <8 x double> %5909, <8 x double> %5772
  store <8 x double> %5910, ptr %5883, align 64, !tbaa !26
  %5911 = getelementptr inbounds nuw i8, ptr %5697, i64 5184
  %5912 = load <8 x double>, ptr %5911, align 64, !tbaa !26
  %5913 = select <8 x i1> %5875, <8 x double> %5912, <8 x double> %5783
  store <8 x double> %5913, ptr %5911, align 64, !tbaa !26
  %5914 = getelementptr inbounds nuw i8, ptr %5697, i64 5952
  %5915 = load <8 x double>, ptr %5914, align 64, !tbaa !26
  %5916 = select <8 x i1> %5875, <8 x double> %5915, <8 x double> %5783
  store <8 x double> %5916, ptr %5914, align 64, !tbaa !26
  %5917 = getelementptr inbounds nuw i8, ptr %5697, i64 5312
  %5918 = load <8 x double>, ptr %5917, align 64, !tbaa !26
  %5919 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5884, <8 x double> %5766, <8 x double> %5918)
  %5920 = select <8 x i1> %5875, <8 x double> %5918, <8 x double> %5919
  store <8 x double> %5920, ptr %5917, align 64, !tbaa !26
  %5921 = getelementptr inbounds nuw i8, ptr %5697, i64 5248
  %5922 = load <8 x double>, ptr %5921, align 64, !tbaa !26
  %5923 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5784, <8 x double> %5766, <8 x double> %5922)
  %5924 = select <8 x i1> %5875, <8 x double> %5922, <8 x double> %5923
  store <8 x double> %5924, ptr %5921, align 64, !tbaa !26
  %5925 = getelementptr inbounds nuw i8, ptr %5697, i64 5568
  %5926 = load <8 x double>, ptr %5925, align 64, !tbaa !26
  %5927 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5905, <8 x double> %5758, <8 x double> %5792)
  %5928 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5784, <8 x double> %5927, <8 x double> %5926)
  %5929 = select <8 x i1> %5875, <8 x double> %5926, <8 x double> %5928
  store <8 x double> %5929, ptr %5925, align 64, !tbaa !26
  %5930 = load <8 x i64>, ptr %5711, align 64, !tbaa !26
  %5931 = or <8 x i64> %5930, %5748
  store <8 x i64> %5931, ptr %5711, align 64, !tbaa !26
  %5932 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %5933 = fmul <8 x double> %5932, splat (double 4.000000e+01)
  %5934 = fcmp olt <8 x double> %5695, %5933
  %5935 = select <8 x i1> %5934, <8 x double> %5695, <8 x double> %5933
  %5936 = icmp ne <8 x i64> %5748, zeroinitializer
  %5937 = select <8 x i1> %5738, <8 x i1> %5936, <8 x i1> zeroinitializer
  %5938 = select <8 x i1> %5937, <8 x double> %5935, <8 x double> %5695
  br label %5970

5939:                                             ; preds = %5805, %5939
  %5940 = phi i64 [ 0, %5805 ], [ %5968, %5939 ]
  %5941 = uitofp nneg i64 %5940 to double
  %5942 = insertelement <8 x double> poison, double %5941, i64 0
  %5943 = shufflevector <8 x double> %5942, <8 x double> poison, <8 x i32> zeroinitializer
  %5944 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5943, <8 x double> %5796, <8 x double> %5772)
  %5945 = load <8 x double>, ptr %5773, align 64, !tbaa !26
  %5946 = load <8 x double>, ptr %5775, align 64, !tbaa !26
  %5947 = load <8 x double>, ptr %5777, align 64, !tbaa !26
  %5948 = load <8 x double>, ptr %5779, align 64, !tbaa !26
  %5949 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5944, <8 x double> %5948, <8 x double> %5947)
  %5950 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5944, <8 x double> %5949, <8 x double> %5946)
  %5951 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5944, <8 x double> %5950, <8 x double> %5945)
  %5952 = load ptr, ptr %5806, align 32, !tbaa !50
  %5953 = getelementptr inbounds nuw <8 x double>, ptr %5952, i64 %5940
  %5954 = load <8 x double>, ptr %5953, align 64, !tbaa !26
  %5955 = select <8 x i1> %5807, <8 x double> %5954, <8 x double> %5951
  store <8 x double> %5955, ptr %5953, align 64, !tbaa !26
  %5956 = load ptr, ptr %5808, align 8, !tbaa !61
  %5957 = getelementptr inbounds nuw <8 x double>, ptr %5956, i64 %5940
  %5958 = load <8 x double>, ptr %5957, align 64, !tbaa !26
  %5959 = select <8 x i1> %5807, <8 x double> %5958, <8 x double> %5951
  store <8 x double> %5959, ptr %5957, align 64, !tbaa !26
  %5960 = load ptr, ptr %5809, align 16, !tbaa !51
  %5961 = getelementptr inbounds nuw <8 x double>, ptr %5960, i64 %5940
  %5962 = load <8 x double>, ptr %5961, align 64, !tbaa !26
  %5963 = select <8 x i1> %5807, <8 x double> %5962, <8 x double> %5758
  store <8 x double> %5963, ptr %5961, align 64, !tbaa !26
  %5964 = load ptr, ptr %5810, align 8, !tbaa !62
  %5965 = getelementptr inbounds nuw <8 x double>, ptr %5964, i64 %5940
  %5966 = load <8 x double>, ptr %5965, align 64, !tbaa !26
  %5967 = select <8 x i1> %5807, <8 x double> %5966, <8 x double> %5758
  store <8 x double> %5967, ptr %5965, align 64, !tbaa !26
  %5968 = add nuw nsw i64 %5940, 1
  %5969 = icmp eq i64 %5968, %5753
  br i1 %5969, label %5868, label %5939, !llvm.loop !199

5970:                                             ; preds = %5868, %5693
  %5971 = phi <8 x double> [ %5938, %5868 ], [ %5695, %5693 ]
  %5972 = add nuw nsw i64 %5694, 1
  %5973 = load i64, ptr %153, align 8, !tbaa !20
  %5974 = icmp slt i64 %5972, %5973
  br i1 %5974, label %5693, label %5975, !llvm.loop !200

5975:                                             ; preds = %5970
  %5976 = load <8 x double>, ptr %133, align 64, !tbaa !26
  br label %5977

5977:                                             ; preds = %5975, %5651
  %5978 = phi <8 x double> [ %5660, %5651 ], [ %5976, %5975 ]
  %5979 = phi <8 x double> [ %5683, %5651 ], [ %5971, %5975 ]
  %5980 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %5979)
  %5981 = insertelement <8 x double> poison, double %5980, i64 0
  %5982 = shufflevector <8 x double> %5981, <8 x double> poison, <8 x i32> zeroinitializer
  %5983 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %5984 = select <8 x i1> %5228, <8 x double> %5983, <8 x double> %5982
  store <8 x double> %5984, ptr %136, align 64, !tbaa !26
  %5985 = load ptr, ptr %215, align 64, !tbaa !38
  %5986 = getelementptr inbounds nuw i8, ptr %5985, i64 64
  store <8 x double> %5978, ptr %5985, align 64, !tbaa !26
  %5987 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %5988 = getelementptr inbounds nuw i8, ptr %5985, i64 128
  store <8 x double> %5987, ptr %5986, align 64, !tbaa !26
  %5989 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %5990 = getelementptr inbounds nuw i8, ptr %5985, i64 192
  store <8 x double> %5989, ptr %5988, align 64, !tbaa !26
  %5991 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %5992 = getelementptr inbounds nuw i8, ptr %5985, i64 256
  store <8 x double> %5991, ptr %5990, align 64, !tbaa !26
  %5993 = load i64, ptr %153, align 8, !tbaa !20
  %5994 = icmp sgt i64 %5993, 0
  br i1 %5994, label %5999, label %5995

5995:                                             ; preds = %5999, %5977
  %5996 = phi ptr [ %5992, %5977 ], [ %6005, %5999 ]
  %5997 = load i64, ptr %124, align 8, !tbaa !44
  %5998 = icmp eq i64 %5997, 0
  br i1 %5998, label %6162, label %6009

5999:                                             ; preds = %5977, %5999
  %6000 = phi ptr [ %6005, %5999 ], [ %5992, %5977 ]
  %6001 = phi i64 [ %6006, %5999 ], [ 0, %5977 ]
  %6002 = load ptr, ptr %126, align 8, !tbaa !28
  %6003 = getelementptr inbounds nuw %struct.Piece, ptr %6002, i64 %6001, i32 41
  %6004 = load <8 x double>, ptr %6003, align 64, !tbaa !26
  %6005 = getelementptr inbounds nuw i8, ptr %6000, i64 64
  store <8 x double> %6004, ptr %6000, align 64, !tbaa !26
  %6006 = add nuw nsw i64 %6001, 1
  %6007 = load i64, ptr %153, align 8, !tbaa !20
  %6008 = icmp slt i64 %6006, %6007
  br i1 %6008, label %5999, label %5995, !llvm.loop !201

6009:                                             ; preds = %5995
  %6010 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %6011 = getelementptr inbounds nuw i8, ptr %5996, i64 64
  store <8 x double> %6010, ptr %5996, align 64, !tbaa !26
  %6012 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %6013 = getelementptr inbounds nuw i8, ptr %5996, i64 128
  store <8 x double> %6012, ptr %6011, align 64, !tbaa !26
  %6014 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %6015 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %6016 = fsub <8 x double> %6014, %6015
  %6017 = fcmp ogt <8 x double> %6016, zeroinitializer
  %6018 = select <8 x i1> %6017, <8 x double> %6016, <8 x double> zeroinitializer
  store <8 x double> %6018, ptr %6013, align 64, !tbaa !26
  %6019 = load i64, ptr %153, align 8, !tbaa !20
  %6020 = icmp sgt i64 %6019, 0
  br i1 %6020, label %6021, label %6162

6021:                                             ; preds = %6009
  %6022 = getelementptr inbounds nuw i8, ptr %5996, i64 192
  br label %6023

6023:                                             ; preds = %6021, %6023
  %6024 = phi ptr [ %6158, %6023 ], [ %6022, %6021 ]
  %6025 = phi i64 [ %6159, %6023 ], [ 0, %6021 ]
  %6026 = load ptr, ptr %126, align 8, !tbaa !28
  %6027 = getelementptr inbounds nuw %struct.Piece, ptr %6026, i64 %6025
  %6028 = getelementptr inbounds nuw i8, ptr %6027, i64 9552
  %6029 = load ptr, ptr %6028, align 16, !tbaa !47
  %6030 = load i64, ptr %115, align 16, !tbaa !21
  %6031 = getelementptr <8 x double>, ptr %6029, i64 %6030
  %6032 = getelementptr i8, ptr %6031, i64 -64
  %6033 = load <8 x double>, ptr %6032, align 64, !tbaa !26
  %6034 = getelementptr inbounds nuw i8, ptr %6027, i64 704
  %6035 = load <8 x double>, ptr %6034, align 64, !tbaa !26, !noalias !202
  %6036 = getelementptr inbounds nuw i8, ptr %6027, i64 768
  %6037 = load <8 x double>, ptr %6036, align 64, !tbaa !26, !noalias !202
  %6038 = getelementptr inbounds nuw i8, ptr %6027, i64 832
  %6039 = load <8 x double>, ptr %6038, align 64, !tbaa !26, !noalias !202
  %6040 = getelementptr inbounds nuw i8, ptr %6027, i64 896
  %6041 = load <8 x double>, ptr %6040, align 64, !tbaa !26, !noalias !202
  %6042 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6033, <8 x double> %6041, <8 x double> %6039)
  %6043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6033, <8 x double> %6042, <8 x double> %6037)
  %6044 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6033, <8 x double> %6043, <8 x double> %6035)
  %6045 = fmul <8 x double> %6033, %6044
  %6046 = getelementptr inbounds nuw i8, ptr %6027, i64 192
  %6047 = load <8 x double>, ptr %6046, align 64, !tbaa !26, !noalias !202
  %6048 = getelementptr inbounds nuw i8, ptr %6027, i64 256
  %6049 = load <8 x double>, ptr %6048, align 64, !tbaa !26, !noalias !202
  %6050 = getelementptr inbounds nuw i8, ptr %6027, i64 320
  %6051 = load <8 x double>, ptr %6050, align 64, !tbaa !26, !noalias !202
  %6052 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6045, <8 x double> %6051, <8 x double> %6049)
  %6053 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6045, <8 x double> %6052, <8 x double> %6047)
  %6054 = fdiv <8 x double> splat (double 1.000000e+00), %6053
  %6055 = fmul <8 x double> %6051, %6045
  %6056 = fmul <8 x double> %6055, splat (double 0x3FD5555555555555)
  %6057 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6049, <8 x double> splat (double 5.000000e-01), <8 x double> %6056)
  %6058 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6045, <8 x double> %6057, <8 x double> %6047)
  %6059 = fmul <8 x double> %6045, %6058
  %6060 = fsub <8 x double> %6033, %6059
  %6061 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6060, <8 x double> %6054, <8 x double> %6045)
  %6062 = getelementptr inbounds nuw i8, ptr %6027, i64 8192
  %6063 = load <8 x double>, ptr %6062, align 64, !tbaa !26
  %6064 = getelementptr inbounds nuw i8, ptr %6027, i64 6400
  %6065 = load <8 x double>, ptr %6064, align 64, !tbaa !26
  %6066 = fsub <8 x double> %6065, %6061
  %6067 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6063, <8 x double> %6066, <8 x double> %6061)
  %6068 = getelementptr inbounds nuw i8, ptr %6024, i64 64
  store <8 x double> %6067, ptr %6024, align 64, !tbaa !26
  %6069 = getelementptr inbounds nuw i8, ptr %6027, i64 7744
  %6070 = load <8 x double>, ptr %6069, align 64, !tbaa !26
  %6071 = getelementptr inbounds nuw i8, ptr %6024, i64 128
  store <8 x double> %6070, ptr %6068, align 64, !tbaa !26
  %6072 = load <8 x double>, ptr %6027, align 64, !tbaa !26
  %6073 = getelementptr inbounds nuw i8, ptr %6027, i64 4224
  %6074 = load <8 x double>, ptr %6073, align 64, !tbaa !26
  %6075 = fsub <8 x double> %6072, %6074
  %6076 = getelementptr inbounds nuw i8, ptr %6024, i64 192
  store <8 x double> %6075, ptr %6071, align 64, !tbaa !26
  %6077 = getelementptr inbounds nuw i8, ptr %6027, i64 4544
  %6078 = load <8 x double>, ptr %6077, align 64, !tbaa !26
  %6079 = getelementptr inbounds nuw i8, ptr %6024, i64 256
  store <8 x double> %6078, ptr %6076, align 64, !tbaa !26
  %6080 = getelementptr inbounds nuw i8, ptr %6027, i64 4480
  %6081 = load <8 x double>, ptr %6080, align 64, !tbaa !26
  %6082 = getelementptr inbounds nuw i8, ptr %6024, i64 320
  store <8 x double> %6081, ptr %6079, align 64, !tbaa !26
  %6083 = getelementptr inbounds nuw i8, ptr %6027, i64 4352
  %6084 = load <8 x double>, ptr %6083, align 64, !tbaa !26
  %6085 = getelementptr inbounds nuw i8, ptr %6024, i64 384
  store <8 x double> %6084, ptr %6082, align 64, !tbaa !26
  %6086 = getelementptr inbounds nuw i8, ptr %6027, i64 4608
  %6087 = load <8 x double>, ptr %6086, align 64, !tbaa !26
  %6088 = getelementptr inbounds nuw i8, ptr %6024, i64 448
  store <8 x double> %6087, ptr %6085, align 64, !tbaa !26
  %6089 = getelementptr inbounds nuw i8, ptr %6027, i64 9648
  %6090 = load i64, ptr %116, align 8, !tbaa !22
  %6091 = sitofp i64 %6090 to double
  %6092 = tail call double @llvm.fmuladd.f64(double %6091, double 7.500000e-01, double -5.000000e-01)
  %6093 = fcmp ogt double %6092, 0.000000e+00
  %6094 = select i1 %6093, double %6092, double 0.000000e+00
  %6095 = fptosi double %6094 to i64
  %6096 = add nsw i64 %6090, -2
  %6097 = tail call i64 @llvm.smin.i64(i64 %6096, i64 %6095)
  %6098 = sitofp i64 %6097 to double
  %6099 = fsub double %6092, %6098
  %6100 = fsub double 1.000000e+00, %6099
  %6101 = insertelement <8 x double> poison, double %6100, i64 0
  %6102 = shufflevector <8 x double> %6101, <8 x double> poison, <8 x i32> zeroinitializer
  %6103 = load ptr, ptr %6089, align 16, !tbaa !51
  %6104 = getelementptr inbounds <8 x double>, ptr %6103, i64 %6097
  %6105 = load <8 x double>, ptr %6104, align 64, !tbaa !26
  %6106 = insertelement <8 x double> poison, double %6099, i64 0
  %6107 = shufflevector <8 x double> %6106, <8 x double> poison, <8 x i32> zeroinitializer
  %6108 = getelementptr i8, ptr %6104, i64 64
  %6109 = load <8 x double>, ptr %6108, align 64, !tbaa !26
  %6110 = fmul <8 x double> %6109, %6107
  %6111 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6102, <8 x double> %6105, <8 x double> %6110)
  store <8 x double> %6111, ptr %6088, align 64, !tbaa !26
  %6112 = load i64, ptr %116, align 8, !tbaa !22
  %6113 = sitofp i64 %6112 to double
  %6114 = tail call double @llvm.fmuladd.f64(double %6113, double 5.000000e-01, double -5.000000e-01)
  %6115 = fcmp ogt double %6114, 0.000000e+00
  %6116 = select i1 %6115, double %6114, double 0.000000e+00
  %6117 = fptosi double %6116 to i64
  %6118 = add nsw i64 %6112, -2
  %6119 = tail call i64 @llvm.smin.i64(i64 %6118, i64 %6117)
  %6120 = sitofp i64 %6119 to double
  %6121 = fsub double %6114, %6120
  %6122 = fsub double 1.000000e+00, %6121
  %6123 = insertelement <8 x double> poison, double %6122, i64 0
  %6124 = shufflevector <8 x double> %6123, <8 x double> poison, <8 x i32> zeroinitializer
  %6125 = load ptr, ptr %6089, align 16, !tbaa !51
  %6126 = getelementptr inbounds <8 x double>, ptr %6125, i64 %6119
  %6127 = load <8 x double>, ptr %6126, align 64, !tbaa !26
  %6128 = insertelement <8 x double> poison, double %6121, i64 0
  %6129 = shufflevector <8 x double> %6128, <8 x double> poison, <8 x i32> zeroinitializer
  %6130 = getelementptr i8, ptr %6126, i64 64
  %6131 = load <8 x double>, ptr %6130, align 64, !tbaa !26
  %6132 = fmul <8 x double> %6131, %6129
  %6133 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6124, <8 x double> %6127, <8 x double> %6132)
  %6134 = getelementptr inbounds nuw i8, ptr %6024, i64 512
  store <8 x double> %6133, ptr %6134, align 64, !tbaa !26
  %6135 = load i64, ptr %116, align 8, !tbaa !22
  %6136 = sitofp i64 %6135 to double
  %6137 = tail call double @llvm.fmuladd.f64(double %6136, double 2.500000e-01, double -5.000000e-01)
  %6138 = fcmp ogt double %6137, 0.000000e+00
  %6139 = select i1 %6138, double %6137, double 0.000000e+00
  %6140 = fptosi double %6139 to i64
  %6141 = add nsw i64 %6135, -2
  %6142 = tail call i64 @llvm.smin.i64(i64 %6141, i64 %6140)
  %6143 = sitofp i64 %6142 to double
  %6144 = fsub double %6137, %6143
  %6145 = fsub double 1.000000e+00, %6144
  %6146 = insertelement <8 x double> poison, double %6145, i64 0
  %6147 = shufflevector <8 x double> %6146, <8 x double> poison, <8 x i32> zeroinitializer
  %6148 = load ptr, ptr %6089, align 16, !tbaa !51
  %6149 = getelementptr inbounds <8 x double>, ptr %6148, i64 %6142
  %6150 = load <8 x double>, ptr %6149, align 64, !tbaa !26
  %6151 = insertelement <8 x double> poison, double %6144, i64 0
  %6152 = shufflevector <8 x double> %6151, <8 x double> poison, <8 x i32> zeroinitializer
  %6153 = getelementptr i8, ptr %6149, i64 64
  %6154 = load <8 x double>, ptr %6153, align 64, !tbaa !26
  %6155 = fmul <8 x double> %6154, %6152
  %6156 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %6147, <8 x double> %6150, <8 x double> %6155)
  %6157 = getelementptr inbounds nuw i8, ptr %6024, i64 576
  store <8 x double> %6156, ptr %6157, align 64, !tbaa !26
  %6158 = getelementptr inbounds nuw i8, ptr %6024, i64 640
  %6159 = add nuw nsw i64 %6025, 1
  %6160 = load i64, ptr %153, align 8, !tbaa !20
  %6161 = icmp slt i64 %6159, %6160
  br i1 %6161, label %6023, label %6162, !llvm.loop !205

6162:                                             ; preds = %6023, %6009, %5995
  %6163 = getelementptr inbounds nuw i8, ptr %5996, i64 192
  %6164 = extractelement <8 x i64> %5098, i64 0
  %6165 = icmp eq i64 %6164, 0
  br i1 %6165, label %6305, label %6166

6166:                                             ; preds = %6162
  %6167 = load i64, ptr %217, align 8, !tbaa !30
  %6168 = load i64, ptr %218, align 8, !tbaa !206
  %6169 = icmp eq i64 %6167, %6168
  br i1 %6169, label %6172, label %6170

6170:                                             ; preds = %6166
  %6171 = load ptr, ptr %222, align 8, !tbaa !207
  br label %6185

6172:                                             ; preds = %6166
  %6173 = load i64, ptr %117, align 8, !tbaa !30
  %6174 = load ptr, ptr %219, align 8, !tbaa !208
  %6175 = load i64, ptr %108, align 8, !tbaa !41
  %6176 = getelementptr inbounds i64, ptr %6174, i64 %6175
  store i64 %6173, ptr %6176, align 8, !tbaa !30
  %6177 = load ptr, ptr %220, align 8, !tbaa !209
  %6178 = load i64, ptr %108, align 8, !tbaa !41
  %6179 = add nsw i64 %6178, 1
  store i64 %6179, ptr %108, align 8, !tbaa !41
  %6180 = load i64, ptr %218, align 8, !tbaa !206
  %6181 = mul nsw i64 %6180, %6178
  %6182 = load i64, ptr %221, align 8, !tbaa !14
  %6183 = mul nsw i64 %6181, %6182
  %6184 = getelementptr inbounds double, ptr %6177, i64 %6183
  store ptr %6184, ptr %222, align 8, !tbaa !207
  br label %6185

6185:                                             ; preds = %6170, %6172
  %6186 = phi i64 [ %6167, %6170 ], [ 0, %6172 ]
  %6187 = phi ptr [ %6171, %6170 ], [ %6184, %6172 ]
  %6188 = add nsw i64 %6186, 1
  store i64 %6188, ptr %217, align 8, !tbaa !30
  %6189 = load i64, ptr %221, align 8, !tbaa !14
  %6190 = mul nsw i64 %6189, %6186
  %6191 = getelementptr inbounds double, ptr %6187, i64 %6190
  %6192 = load ptr, ptr %215, align 64, !tbaa !38
  %6193 = icmp ult ptr %6192, %5992
  br i1 %6193, label %6252, label %6194

6194:                                             ; preds = %6252, %6185
  %6195 = phi ptr [ %6191, %6185 ], [ %6256, %6252 ]
  %6196 = load i64, ptr %125, align 64, !tbaa !16
  %6197 = icmp sgt i64 %6196, 0
  br i1 %6197, label %6198, label %6240

6198:                                             ; preds = %6194
  %6199 = and i64 %6196, 3
  %6200 = icmp ult i64 %6196, 4
  br i1 %6200, label %6225, label %6201

6201:                                             ; preds = %6198
  %6202 = and i64 %6196, 9223372036854775804
  br label %6203

6203:                                             ; preds = %6203, %6201
  %6204 = phi i64 [ 0, %6201 ], [ %6222, %6203 ]
  %6205 = phi ptr [ %6195, %6201 ], [ %6219, %6203 ]
  %6206 = phi i64 [ 0, %6201 ], [ %6223, %6203 ]
  %6207 = getelementptr i8, ptr %6205, i64 8
  %6208 = load <8 x double>, ptr %5992, align 64, !tbaa !26
  %6209 = extractelement <8 x double> %6208, i64 %6204
  store double %6209, ptr %6205, align 8, !tbaa !42
  %6210 = or disjoint i64 %6204, 1
  %6211 = getelementptr i8, ptr %6205, i64 16
  %6212 = load <8 x double>, ptr %5992, align 64, !tbaa !26
  %6213 = extractelement <8 x double> %6212, i64 %6210
  store double %6213, ptr %6207, align 8, !tbaa !42
  %6214 = or disjoint i64 %6204, 2
  %6215 = getelementptr i8, ptr %6205, i64 24
  %6216 = load <8 x double>, ptr %5992, align 64, !tbaa !26
  %6217 = extractelement <8 x double> %6216, i64 %6214
  store double %6217, ptr %6211, align 8, !tbaa !42
  %6218 = or disjoint i64 %6204, 3
  %6219 = getelementptr i8, ptr %6205, i64 32
  %6220 = load <8 x double>, ptr %5992, align 64, !tbaa !26
  %6221 = extractelement <8 x double> %6220, i64 %6218
  store double %6221, ptr %6215, align 8, !tbaa !42
  %6222 = add nuw nsw i64 %6204, 4
  %6223 = add i64 %6206, 4
  %6224 = icmp eq i64 %6223, %6202
  br i1 %6224, label %6225, label %6203, !llvm.loop !210

6225:                                             ; preds = %6203, %6198
  %6226 = phi ptr [ poison, %6198 ], [ %6219, %6203 ]
  %6227 = phi i64 [ 0, %6198 ], [ %6222, %6203 ]
  %6228 = phi ptr [ %6195, %6198 ], [ %6219, %6203 ]
  %6229 = icmp eq i64 %6199, 0
  br i1 %6229, label %6240, label %6230

6230:                                             ; preds = %6225, %6230
  %6231 = phi i64 [ %6237, %6230 ], [ %6227, %6225 ]
  %6232 = phi ptr [ %6234, %6230 ], [ %6228, %6225 ]
  %6233 = phi i64 [ %6238, %6230 ], [ 0, %6225 ]
  %6234 = getelementptr i8, ptr %6232, i64 8
  %6235 = load <8 x double>, ptr %5992, align 64, !tbaa !26
  %6236 = extractelement <8 x double> %6235, i64 %6231
  store double %6236, ptr %6232, align 8, !tbaa !42
  %6237 = add nuw nsw i64 %6231, 1
  %6238 = add i64 %6233, 1
  %6239 = icmp eq i64 %6238, %6199
  br i1 %6239, label %6240, label %6230, !llvm.loop !211

6240:                                             ; preds = %6225, %6230, %6194
  %6241 = phi ptr [ %6195, %6194 ], [ %6226, %6225 ], [ %6234, %6230 ]
  %6242 = load i64, ptr %124, align 8, !tbaa !44
  %6243 = icmp eq i64 %6242, 0
  br i1 %6243, label %6305, label %6244

6244:                                             ; preds = %6240
  %6245 = load double, ptr %5996, align 8, !tbaa !42
  %6246 = getelementptr inbounds nuw i8, ptr %6241, i64 8
  store double %6245, ptr %6241, align 8, !tbaa !42
  %6247 = getelementptr inbounds nuw i8, ptr %5996, i64 64
  %6248 = load double, ptr %6247, align 8, !tbaa !42
  %6249 = getelementptr inbounds nuw i8, ptr %6241, i64 16
  store double %6248, ptr %6246, align 8, !tbaa !42
  %6250 = getelementptr inbounds nuw i8, ptr %5996, i64 128
  %6251 = load double, ptr %6250, align 8, !tbaa !42
  store double %6251, ptr %6249, align 8, !tbaa !42
  br i1 %6197, label %6259, label %6305

6252:                                             ; preds = %6185, %6252
  %6253 = phi ptr [ %6257, %6252 ], [ %6192, %6185 ]
  %6254 = phi ptr [ %6256, %6252 ], [ %6191, %6185 ]
  %6255 = load double, ptr %6253, align 8, !tbaa !42
  %6256 = getelementptr inbounds nuw i8, ptr %6254, i64 8
  store double %6255, ptr %6254, align 8, !tbaa !42
  %6257 = getelementptr inbounds nuw i8, ptr %6253, i64 64
  %6258 = icmp ult ptr %6257, %5992
  br i1 %6258, label %6252, label %6194, !llvm.loop !213

6259:                                             ; preds = %6244
  %6260 = getelementptr inbounds nuw i8, ptr %6241, i64 24
  %6261 = getelementptr inbounds nuw i8, ptr %5996, i64 256
  %6262 = getelementptr inbounds nuw i8, ptr %5996, i64 320
  %6263 = getelementptr inbounds nuw i8, ptr %5996, i64 384
  %6264 = getelementptr inbounds nuw i8, ptr %5996, i64 448
  %6265 = getelementptr inbounds nuw i8, ptr %5996, i64 512
  %6266 = getelementptr inbounds nuw i8, ptr %5996, i64 576
  %6267 = getelementptr inbounds nuw i8, ptr %5996, i64 640
  %6268 = getelementptr inbounds nuw i8, ptr %5996, i64 704
  %6269 = getelementptr inbounds nuw i8, ptr %5996, i64 768
  br label %6270

6270:                                             ; preds = %6259, %6270
  %6271 = phi i64 [ %6303, %6270 ], [ 0, %6259 ]
  %6272 = phi ptr [ %6302, %6270 ], [ %6260, %6259 ]
  %6273 = load <8 x double>, ptr %6163, align 64, !tbaa !26
  %6274 = extractelement <8 x double> %6273, i64 %6271
  %6275 = getelementptr inbounds nuw i8, ptr %6272, i64 8
  store double %6274, ptr %6272, align 8, !tbaa !42
  %6276 = load <8 x double>, ptr %6261, align 64, !tbaa !26
  %6277 = extractelement <8 x double> %6276, i64 %6271
  %6278 = getelementptr inbounds nuw i8, ptr %6272, i64 16
  store double %6277, ptr %6275, align 8, !tbaa !42
  %6279 = load <8 x double>, ptr %6262, align 64, !tbaa !26
  %6280 = extractelement <8 x double> %6279, i64 %6271
  %6281 = getelementptr inbounds nuw i8, ptr %6272, i64 24
  store double %6280, ptr %6278, align 8, !tbaa !42
  %6282 = load <8 x double>, ptr %6263, align 64, !tbaa !26
  %6283 = extractelement <8 x double> %6282, i64 %6271
  %6284 = getelementptr inbounds nuw i8, ptr %6272, i64 32
  store double %6283, ptr %6281, align 8, !tbaa !42
  %6285 = load <8 x double>, ptr %6264, align 64, !tbaa !26
  %6286 = extractelement <8 x double> %6285, i64 %6271
  %6287 = getelementptr inbounds nuw i8, ptr %6272, i64 40
  store double %6286, ptr %6284, align 8, !tbaa !42
  %6288 = load <8 x double>, ptr %6265, align 64, !tbaa !26
  %6289 = extractelement <8 x double> %6288, i64 %6271
  %6290 = getelementptr inbounds nuw i8, ptr %6272, i64 48
  store double %6289, ptr %6287, align 8, !tbaa !42
  %6291 = load <8 x double>, ptr %6266, align 64, !tbaa !26
  %6292 = extractelement <8 x double> %6291, i64 %6271
  %6293 = getelementptr inbounds nuw i8, ptr %6272, i64 56
  store double %6292, ptr %6290, align 8, !tbaa !42
  %6294 = load <8 x double>, ptr %6267, align 64, !tbaa !26
  %6295 = extractelement <8 x double> %6294, i64 %6271
  %6296 = getelementptr inbounds nuw i8, ptr %6272, i64 64
  store double %6295, ptr %6293, align 8, !tbaa !42
  %6297 = load <8 x double>, ptr %6268, align 64, !tbaa !26
  %6298 = extractelement <8 x double> %6297, i64 %6271
  %6299 = getelementptr inbounds nuw i8, ptr %6272, i64 72
  store double %6298, ptr %6296, align 8, !tbaa !42
  %6300 = load <8 x double>, ptr %6269, align 64, !tbaa !26
  %6301 = extractelement <8 x double> %6300, i64 %6271
  %6302 = getelementptr inbounds nuw i8, ptr %6272, i64 80
  store double %6301, ptr %6299, align 8, !tbaa !42
  %6303 = add nuw nsw i64 %6271, 1
  %6304 = icmp eq i64 %6303, %6196
  br i1 %6304, label %6305, label %6270, !llvm.loop !210

6305:                                             ; preds = %6270, %6244, %6240, %6162
  %6306 = load <8 x double>, ptr %133, align 64, !tbaa !26
  %6307 = load <8 x double>, ptr %154, align 64, !tbaa !26
  %6308 = fsub <8 x double> %6306, %6307
  %6309 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %6310 = fadd <8 x double> %6309, splat (double -1.000000e-09)
  %6311 = fcmp oge <8 x double> %6308, %6310
  %6312 = select <8 x i1> %6311, <8 x i64> %5098, <8 x i64> zeroinitializer
  %6313 = load i64, ptr %153, align 8, !tbaa !20
  %6314 = icmp sgt i64 %6313, 0
  br i1 %6314, label %6315, label %6347

6315:                                             ; preds = %6305
  %6316 = load ptr, ptr %126, align 8, !tbaa !28
  %6317 = and i64 %6313, 1
  %6318 = icmp eq i64 %6313, 1
  br i1 %6318, label %6337, label %6319

6319:                                             ; preds = %6315
  %6320 = and i64 %6313, 9223372036854775806
  br label %6321

6321:                                             ; preds = %6321, %6319
  %6322 = phi i64 [ 0, %6319 ], [ %6334, %6321 ]
  %6323 = phi <8 x double> [ splat (double 1.000000e+09), %6319 ], [ %6333, %6321 ]
  %6324 = phi i64 [ 0, %6319 ], [ %6335, %6321 ]
  %6325 = getelementptr inbounds nuw %struct.Piece, ptr %6316, i64 %6322, i32 41
  %6326 = load <8 x double>, ptr %6325, align 64, !tbaa !26
  %6327 = fcmp olt <8 x double> %6323, %6326
  %6328 = select <8 x i1> %6327, <8 x double> %6323, <8 x double> %6326
  %6329 = or disjoint i64 %6322, 1
  %6330 = getelementptr inbounds nuw %struct.Piece, ptr %6316, i64 %6329, i32 41
  %6331 = load <8 x double>, ptr %6330, align 64, !tbaa !26
  %6332 = fcmp olt <8 x double> %6328, %6331
  %6333 = select <8 x i1> %6332, <8 x double> %6328, <8 x double> %6331
  %6334 = add nuw nsw i64 %6322, 2
  %6335 = add i64 %6324, 2
  %6336 = icmp eq i64 %6335, %6320
  br i1 %6336, label %6337, label %6321, !llvm.loop !181

6337:                                             ; preds = %6321, %6315
  %6338 = phi <8 x double> [ poison, %6315 ], [ %6333, %6321 ]
  %6339 = phi i64 [ 0, %6315 ], [ %6334, %6321 ]
  %6340 = phi <8 x double> [ splat (double 1.000000e+09), %6315 ], [ %6333, %6321 ]
  %6341 = icmp eq i64 %6317, 0
  br i1 %6341, label %6347, label %6342

6342:                                             ; preds = %6337
  %6343 = getelementptr inbounds nuw %struct.Piece, ptr %6316, i64 %6339, i32 41
  %6344 = load <8 x double>, ptr %6343, align 64, !tbaa !26
  %6345 = fcmp olt <8 x double> %6340, %6344
  %6346 = select <8 x i1> %6345, <8 x double> %6340, <8 x double> %6344
  br label %6347

6347:                                             ; preds = %6342, %6337, %6305
  %6348 = phi <8 x double> [ splat (double 1.000000e+09), %6305 ], [ %6338, %6337 ], [ %6346, %6342 ]
  %6349 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %6348)
  %6350 = insertelement <8 x double> poison, double %6349, i64 0
  %6351 = shufflevector <8 x double> %6350, <8 x double> poison, <8 x i32> zeroinitializer
  %6352 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %6353 = select <8 x i1> %5228, <8 x double> %6352, <8 x double> %6351
  store <8 x double> %6353, ptr %211, align 64, !tbaa !26
  %6354 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %6355 = fcmp une <8 x double> %6354, zeroinitializer
  %6356 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %6357 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %6358 = fsub <8 x double> %6356, %6357
  %6359 = fcmp une <8 x double> %6354, splat (double 1.000000e+00)
  %6360 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %6361 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %6362 = fsub <8 x double> %6360, %6361
  %6363 = select <8 x i1> %6359, <8 x double> splat (double -1.000000e+00), <8 x double> %6362
  %6364 = fcmp une <8 x double> %6354, splat (double 2.000000e+00)
  %6365 = fsub <8 x double> %6353, %6361
  %6366 = select <8 x i1> %6364, <8 x double> %6363, <8 x double> %6365
  %6367 = fcmp une <8 x double> %6354, splat (double 3.000000e+00)
  %6368 = fsub <8 x double> %6358, %6361
  %6369 = select <8 x i1> %6367, <8 x double> %6366, <8 x double> %6368
  %6370 = fcmp une <8 x double> %6354, splat (double 4.000000e+00)
  %6371 = fsub <8 x double> %6361, %6358
  %6372 = select <8 x i1> %6370, <8 x double> %6369, <8 x double> %6371
  %6373 = fcmp oge <8 x double> %6372, splat (double 0xBEB0C6F7A0B5ED8D)
  %6374 = select <8 x i1> %6373, <8 x i1> %6355, <8 x i1> zeroinitializer
  %6375 = select <8 x i1> %6374, <8 x i64> %5098, <8 x i64> zeroinitializer
  %6376 = xor <8 x i64> %6375, splat (i64 -1)
  %6377 = and <8 x i64> %6312, %6376
  %6378 = load <8 x double>, ptr %122, align 64, !tbaa !26
  %6379 = icmp ne <8 x i64> %6377, zeroinitializer
  %6380 = select <8 x i1> %6355, <8 x i1> %6379, <8 x i1> zeroinitializer
  %6381 = select <8 x i1> %6380, <8 x double> splat (double 2.000000e+00), <8 x double> %6378
  store <8 x double> %6381, ptr %122, align 64, !tbaa !26
  %6382 = or <8 x i64> %6375, %6312
  %6383 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %6384 = fadd <8 x double> %6383, splat (double 1.000000e+00)
  %6385 = icmp eq <8 x i64> %6382, zeroinitializer
  %6386 = select <8 x i1> %6385, <8 x double> %6383, <8 x double> %6384
  store <8 x double> %6386, ptr %216, align 64, !tbaa !26
  %6387 = xor <8 x i64> %6382, %5098
  %6388 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %6389 = fcmp oeq <8 x double> %6388, zeroinitializer
  %6390 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %6391 = fcmp oeq <8 x double> %6390, zeroinitializer
  %6392 = select <8 x i1> %6391, <8 x i1> %6389, <8 x i1> zeroinitializer
  %6393 = select <8 x i1> %6392, <8 x i64> %6387, <8 x i64> zeroinitializer
  %6394 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %6395 = fmul <8 x double> %6394, splat (double 5.000000e-01)
  %6396 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %6397 = fadd <8 x double> %6396, %6395
  %6398 = fadd <8 x double> %6397, splat (double -4.000000e-03)
  %6399 = fcmp ult <8 x double> %6360, %6398
  %6400 = fsub <8 x double> %6396, %6395
  %6401 = fadd <8 x double> %6400, splat (double 4.000000e-03)
  %6402 = fcmp ole <8 x double> %6360, %6401
  %6403 = load <8 x i64>, ptr %140, align 64, !tbaa !26
  %6404 = select <8 x i1> %6402, <8 x i64> splat (i64 -1), <8 x i64> %6403
  %6405 = select <8 x i1> %6399, <8 x i64> %6404, <8 x i64> zeroinitializer
  %6406 = xor <8 x i64> %6405, %6403
  %6407 = and <8 x i64> %6406, %6393
  %6408 = and <8 x i64> %6405, %6393
  %6409 = xor <8 x i64> %6393, splat (i64 -1)
  %6410 = and <8 x i64> %6403, %6409
  %6411 = or <8 x i64> %6408, %6410
  store <8 x i64> %6411, ptr %140, align 64, !tbaa !26
  %6412 = load <8 x i64>, ptr %150, align 64, !tbaa !26
  %6413 = or <8 x i64> %6407, %6412
  store <8 x i64> %6413, ptr %150, align 64, !tbaa !26
  %6414 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %6382)
  %6415 = icmp eq i64 %6414, 0
  br i1 %6415, label %6450, label %6416

6416:                                             ; preds = %6347
  %6417 = extractelement <8 x i64> %6382, i64 0
  %6418 = icmp eq i64 %6417, 0
  br i1 %6418, label %6420, label %6419

6419:                                             ; preds = %6416
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #5
  br label %6420

6420:                                             ; preds = %6419, %6416
  %6421 = extractelement <8 x i64> %6382, i64 1
  %6422 = icmp eq i64 %6421, 0
  br i1 %6422, label %6424, label %6423

6423:                                             ; preds = %6420
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #5
  br label %6424

6424:                                             ; preds = %6423, %6420
  %6425 = extractelement <8 x i64> %6382, i64 2
  %6426 = icmp eq i64 %6425, 0
  br i1 %6426, label %6428, label %6427

6427:                                             ; preds = %6424
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 2) #5
  br label %6428

6428:                                             ; preds = %6427, %6424
  %6429 = extractelement <8 x i64> %6382, i64 3
  %6430 = icmp eq i64 %6429, 0
  br i1 %6430, label %6432, label %6431

6431:                                             ; preds = %6428
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 3) #5
  br label %6432

6432:                                             ; preds = %6431, %6428
  %6433 = extractelement <8 x i64> %6382, i64 4
  %6434 = icmp eq i64 %6433, 0
  br i1 %6434, label %6436, label %6435

6435:                                             ; preds = %6432
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 4) #5
  br label %6436

6436:                                             ; preds = %6435, %6432
  %6437 = extractelement <8 x i64> %6382, i64 5
  %6438 = icmp eq i64 %6437, 0
  br i1 %6438, label %6440, label %6439

6439:                                             ; preds = %6436
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 5) #5
  br label %6440

6440:                                             ; preds = %6439, %6436
  %6441 = extractelement <8 x i64> %6382, i64 6
  %6442 = icmp eq i64 %6441, 0
  br i1 %6442, label %6444, label %6443

6443:                                             ; preds = %6440
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 6) #5
  br label %6444

6444:                                             ; preds = %6443, %6440
  %6445 = extractelement <8 x i64> %6382, i64 7
  %6446 = icmp eq i64 %6445, 0
  br i1 %6446, label %6448, label %6447

6447:                                             ; preds = %6444
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 7) #5
  br label %6448

6448:                                             ; preds = %6447, %6444
  %6449 = load <8 x double>, ptr %122, align 64, !tbaa !26
  br label %6450

6450:                                             ; preds = %6448, %6347
  %6451 = phi <8 x double> [ %6449, %6448 ], [ %6381, %6347 ]
  %6452 = load <8 x double>, ptr %119, align 64, !tbaa !26
  %6453 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %6454 = fadd <8 x double> %6453, splat (double -1.000000e+00)
  %6455 = fcmp oge <8 x double> %6452, %6454
  %6456 = select <8 x i1> %6455, <8 x i64> %5098, <8 x i64> zeroinitializer
  %6457 = icmp eq <8 x i64> %6456, zeroinitializer
  %6458 = select <8 x i1> %6457, <8 x double> %6451, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %6458, ptr %122, align 64, !tbaa !26
  %6459 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %6456)
  %6460 = icmp eq i64 %6459, 0
  br i1 %6460, label %532, label %6461

6461:                                             ; preds = %6450
  %6462 = extractelement <8 x i64> %6456, i64 0
  %6463 = icmp eq i64 %6462, 0
  br i1 %6463, label %6465, label %6464

6464:                                             ; preds = %6461
  store double 1.000000e+00, ptr %114, align 8, !tbaa !42
  br label %6465

6465:                                             ; preds = %6464, %6461
  %6466 = extractelement <8 x i64> %6456, i64 1
  %6467 = icmp eq i64 %6466, 0
  br i1 %6467, label %6469, label %6468

6468:                                             ; preds = %6465
  store double 1.000000e+00, ptr %267, align 8, !tbaa !42
  br label %6469

6469:                                             ; preds = %6468, %6465
  %6470 = extractelement <8 x i64> %6456, i64 2
  %6471 = icmp eq i64 %6470, 0
  br i1 %6471, label %6473, label %6472

6472:                                             ; preds = %6469
  store double 1.000000e+00, ptr %268, align 8, !tbaa !42
  br label %6473

6473:                                             ; preds = %6472, %6469
  %6474 = extractelement <8 x i64> %6456, i64 3
  %6475 = icmp eq i64 %6474, 0
  br i1 %6475, label %6477, label %6476

6476:                                             ; preds = %6473
  store double 1.000000e+00, ptr %269, align 8, !tbaa !42
  br label %6477

6477:                                             ; preds = %6476, %6473
  %6478 = extractelement <8 x i64> %6456, i64 4
  %6479 = icmp eq i64 %6478, 0
  br i1 %6479, label %6481, label %6480

6480:                                             ; preds = %6477
  store double 1.000000e+00, ptr %270, align 8, !tbaa !42
  br label %6481

6481:                                             ; preds = %6480, %6477
  %6482 = extractelement <8 x i64> %6456, i64 5
  %6483 = icmp eq i64 %6482, 0
  br i1 %6483, label %6485, label %6484

6484:                                             ; preds = %6481
  store double 1.000000e+00, ptr %271, align 8, !tbaa !42
  br label %6485

6485:                                             ; preds = %6484, %6481
  %6486 = extractelement <8 x i64> %6456, i64 6
  %6487 = icmp eq i64 %6486, 0
  br i1 %6487, label %6489, label %6488

6488:                                             ; preds = %6485
  store double 1.000000e+00, ptr %272, align 8, !tbaa !42
  br label %6489

6489:                                             ; preds = %6488, %6485
  %6490 = extractelement <8 x i64> %6456, i64 7
  %6491 = icmp eq i64 %6490, 0
  br i1 %6491, label %532, label %6492

6492:                                             ; preds = %6489
  store double 1.000000e+00, ptr %273, align 8, !tbaa !42
  br label %532

6493:                                             ; preds = %532, %537, %105
  %6494 = phi i64 [ 0, %105 ], [ 1, %537 ], [ 0, %532 ]
  ret i64 %6494
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr nocapture noundef nonnull align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #6
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %7 = zext nneg i32 %2 to i64
  %8 = load ptr, ptr %5, align 8, !tbaa !214
  %9 = load i64, ptr %6, align 8, !tbaa !27
  %10 = getelementptr inbounds i64, ptr %8, i64 %9
  %11 = load i64, ptr %10, align 8, !tbaa !30
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2, i64 noundef %11) #5
  %12 = getelementptr inbounds nuw i64, ptr %4, i64 %7
  store i64 -1, ptr %12, align 8, !tbaa !30
  %13 = add nuw nsw i64 %7, 1
  %14 = load ptr, ptr %5, align 8, !tbaa !214
  %15 = load i64, ptr %6, align 8, !tbaa !27
  %16 = getelementptr inbounds i64, ptr %14, i64 %15
  %17 = load i64, ptr %16, align 8, !tbaa !30
  %18 = trunc nuw nsw i64 %13 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %18, i64 noundef %17) #5
  %19 = getelementptr inbounds nuw i64, ptr %4, i64 %13
  store i64 -1, ptr %19, align 8, !tbaa !30
  %20 = add nuw nsw i64 %7, 2
  %21 = load ptr, ptr %5, align 8, !tbaa !214
  %22 = load i64, ptr %6, align 8, !tbaa !27
  %23 = getelementptr inbounds i64, ptr %21, i64 %22
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = trunc nuw nsw i64 %20 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %25, i64 noundef %24) #5
  %26 = getelementptr inbounds nuw i64, ptr %4, i64 %20
  store i64 -1, ptr %26, align 8, !tbaa !30
  %27 = add nuw nsw i64 %7, 3
  %28 = load ptr, ptr %5, align 8, !tbaa !214
  %29 = load i64, ptr %6, align 8, !tbaa !27
  %30 = getelementptr inbounds i64, ptr %28, i64 %29
  %31 = load i64, ptr %30, align 8, !tbaa !30
  %32 = trunc nuw nsw i64 %27 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %32, i64 noundef %31) #5
  %33 = getelementptr inbounds nuw i64, ptr %4, i64 %27
  store i64 -1, ptr %33, align 8, !tbaa !30
  %34 = add nuw nsw i64 %7, 4
  %35 = load ptr, ptr %5, align 8, !tbaa !214
  %36 = load i64, ptr %6, align 8, !tbaa !27
  %37 = getelementptr inbounds i64, ptr %35, i64 %36
  %38 = load i64, ptr %37, align 8, !tbaa !30
  %39 = trunc nuw nsw i64 %34 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %39, i64 noundef %38) #5
  %40 = getelementptr inbounds nuw i64, ptr %4, i64 %34
  store i64 -1, ptr %40, align 8, !tbaa !30
  %41 = add nuw nsw i64 %7, 5
  %42 = load ptr, ptr %5, align 8, !tbaa !214
  %43 = load i64, ptr %6, align 8, !tbaa !27
  %44 = getelementptr inbounds i64, ptr %42, i64 %43
  %45 = load i64, ptr %44, align 8, !tbaa !30
  %46 = trunc nuw nsw i64 %41 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %46, i64 noundef %45) #5
  %47 = getelementptr inbounds nuw i64, ptr %4, i64 %41
  store i64 -1, ptr %47, align 8, !tbaa !30
  %48 = add nuw nsw i64 %7, 6
  %49 = load ptr, ptr %5, align 8, !tbaa !214
  %50 = load i64, ptr %6, align 8, !tbaa !27
  %51 = getelementptr inbounds i64, ptr %49, i64 %50
  %52 = load i64, ptr %51, align 8, !tbaa !30
  %53 = trunc nuw nsw i64 %48 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %53, i64 noundef %52) #5
  %54 = getelementptr inbounds nuw i64, ptr %4, i64 %48
  store i64 -1, ptr %54, align 8, !tbaa !30
  %55 = add nuw nsw i64 %7, 7
  %56 = load ptr, ptr %5, align 8, !tbaa !214
  %57 = load i64, ptr %6, align 8, !tbaa !27
  %58 = getelementptr inbounds i64, ptr %56, i64 %57
  %59 = load i64, ptr %58, align 8, !tbaa !30
  %60 = trunc nuw nsw i64 %55 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %60, i64 noundef %59) #5
  %61 = getelementptr inbounds nuw i64, ptr %4, i64 %55
  store i64 -1, ptr %61, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2) #5
  %62 = add nuw nsw i32 %2, 1
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %62) #5
  %63 = add nuw nsw i32 %2, 2
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %63) #5
  %64 = add nuw nsw i32 %2, 3
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %64) #5
  %65 = add nuw nsw i32 %2, 4
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %65) #5
  %66 = add nuw nsw i32 %2, 5
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %66) #5
  %67 = add nuw nsw i32 %2, 6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %67) #5
  %68 = add nuw nsw i32 %2, 7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %68) #5
  %69 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %70 = load i64, ptr %69, align 8, !tbaa !27
  %71 = add nsw i64 %70, 1
  store i64 %71, ptr %69, align 8, !tbaa !27
  %72 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %73 = getelementptr inbounds nuw i8, ptr %0, i64 6272
  %74 = load ptr, ptr %73, align 64, !tbaa !38
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %76 = load <8 x double>, ptr %75, align 64, !tbaa !26
  %77 = getelementptr inbounds nuw i8, ptr %74, i64 64
  store <8 x double> %76, ptr %74, align 64, !tbaa !26
  %78 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %79 = load <8 x double>, ptr %78, align 64, !tbaa !26
  %80 = getelementptr inbounds nuw i8, ptr %74, i64 128
  store <8 x double> %79, ptr %77, align 64, !tbaa !26
  %81 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %82 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %83 = load <8 x double>, ptr %82, align 64, !tbaa !26
  %84 = getelementptr inbounds nuw i8, ptr %74, i64 192
  store <8 x double> %83, ptr %80, align 64, !tbaa !26
  %85 = load <8 x double>, ptr %81, align 64, !tbaa !26
  %86 = getelementptr inbounds nuw i8, ptr %74, i64 256
  store <8 x double> %85, ptr %84, align 64, !tbaa !26
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %88 = load i64, ptr %87, align 8, !tbaa !20
  %89 = icmp sgt i64 %88, 0
  br i1 %89, label %90, label %92

90:                                               ; preds = %3
  %91 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  br label %97

92:                                               ; preds = %97, %3
  %93 = phi ptr [ %86, %3 ], [ %103, %97 ]
  %94 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %95 = load i64, ptr %94, align 8, !tbaa !44
  %96 = icmp eq i64 %95, 0
  br i1 %96, label %266, label %107

97:                                               ; preds = %90, %97
  %98 = phi ptr [ %86, %90 ], [ %103, %97 ]
  %99 = phi i64 [ 0, %90 ], [ %104, %97 ]
  %100 = load ptr, ptr %91, align 8, !tbaa !28
  %101 = getelementptr inbounds nuw %struct.Piece, ptr %100, i64 %99, i32 41
  %102 = load <8 x double>, ptr %101, align 64, !tbaa !26
  %103 = getelementptr inbounds nuw i8, ptr %98, i64 64
  store <8 x double> %102, ptr %98, align 64, !tbaa !26
  %104 = add nuw nsw i64 %99, 1
  %105 = load i64, ptr %87, align 8, !tbaa !20
  %106 = icmp slt i64 %104, %105
  br i1 %106, label %97, label %92, !llvm.loop !201

107:                                              ; preds = %92
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 3136
  %109 = load <8 x double>, ptr %108, align 64, !tbaa !26
  %110 = getelementptr inbounds nuw i8, ptr %93, i64 64
  store <8 x double> %109, ptr %93, align 64, !tbaa !26
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %112 = load <8 x double>, ptr %111, align 64, !tbaa !26
  %113 = getelementptr inbounds nuw i8, ptr %93, i64 128
  store <8 x double> %112, ptr %110, align 64, !tbaa !26
  %114 = load <8 x double>, ptr %82, align 64, !tbaa !26
  %115 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %116 = load <8 x double>, ptr %115, align 64, !tbaa !26
  %117 = fsub <8 x double> %114, %116
  %118 = fcmp ogt <8 x double> %117, zeroinitializer
  %119 = select <8 x i1> %118, <8 x double> %117, <8 x double> zeroinitializer
  store <8 x double> %119, ptr %113, align 64, !tbaa !26
  %120 = load i64, ptr %87, align 8, !tbaa !20
  %121 = icmp sgt i64 %120, 0
  br i1 %121, label %122, label %266

122:                                              ; preds = %107
  %123 = getelementptr inbounds nuw i8, ptr %93, i64 192
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  br label %127

127:                                              ; preds = %122, %127
  %128 = phi ptr [ %123, %122 ], [ %262, %127 ]
  %129 = phi i64 [ 0, %122 ], [ %263, %127 ]
  %130 = load ptr, ptr %124, align 8, !tbaa !28
  %131 = getelementptr inbounds nuw %struct.Piece, ptr %130, i64 %129
  %132 = getelementptr inbounds nuw i8, ptr %131, i64 9552
  %133 = load ptr, ptr %132, align 16, !tbaa !47
  %134 = load i64, ptr %125, align 16, !tbaa !21
  %135 = getelementptr <8 x double>, ptr %133, i64 %134
  %136 = getelementptr i8, ptr %135, i64 -64
  %137 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %138 = getelementptr inbounds nuw i8, ptr %131, i64 704
  %139 = load <8 x double>, ptr %138, align 64, !tbaa !26, !noalias !215
  %140 = getelementptr inbounds nuw i8, ptr %131, i64 768
  %141 = load <8 x double>, ptr %140, align 64, !tbaa !26, !noalias !215
  %142 = getelementptr inbounds nuw i8, ptr %131, i64 832
  %143 = load <8 x double>, ptr %142, align 64, !tbaa !26, !noalias !215
  %144 = getelementptr inbounds nuw i8, ptr %131, i64 896
  %145 = load <8 x double>, ptr %144, align 64, !tbaa !26, !noalias !215
  %146 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %137, <8 x double> %145, <8 x double> %143)
  %147 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %137, <8 x double> %146, <8 x double> %141)
  %148 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %137, <8 x double> %147, <8 x double> %139)
  %149 = fmul <8 x double> %137, %148
  %150 = getelementptr inbounds nuw i8, ptr %131, i64 192
  %151 = load <8 x double>, ptr %150, align 64, !tbaa !26, !noalias !215
  %152 = getelementptr inbounds nuw i8, ptr %131, i64 256
  %153 = load <8 x double>, ptr %152, align 64, !tbaa !26, !noalias !215
  %154 = getelementptr inbounds nuw i8, ptr %131, i64 320
  %155 = load <8 x double>, ptr %154, align 64, !tbaa !26, !noalias !215
  %156 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %149, <8 x double> %155, <8 x double> %153)
  %157 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %149, <8 x double> %156, <8 x double> %151)
  %158 = fdiv <8 x double> splat (double 1.000000e+00), %157
  %159 = fmul <8 x double> %155, %149
  %160 = fmul <8 x double> %159, splat (double 0x3FD5555555555555)
  %161 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %153, <8 x double> splat (double 5.000000e-01), <8 x double> %160)
  %162 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %149, <8 x double> %161, <8 x double> %151)
  %163 = fmul <8 x double> %149, %162
  %164 = fsub <8 x double> %137, %163
  %165 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %164, <8 x double> %158, <8 x double> %149)
  %166 = getelementptr inbounds nuw i8, ptr %131, i64 8192
  %167 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %168 = getelementptr inbounds nuw i8, ptr %131, i64 6400
  %169 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %170 = fsub <8 x double> %169, %165
  %171 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %167, <8 x double> %170, <8 x double> %165)
  %172 = getelementptr inbounds nuw i8, ptr %128, i64 64
  store <8 x double> %171, ptr %128, align 64, !tbaa !26
  %173 = getelementptr inbounds nuw i8, ptr %131, i64 7744
  %174 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %175 = getelementptr inbounds nuw i8, ptr %128, i64 128
  store <8 x double> %174, ptr %172, align 64, !tbaa !26
  %176 = load <8 x double>, ptr %131, align 64, !tbaa !26
  %177 = getelementptr inbounds nuw i8, ptr %131, i64 4224
  %178 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %179 = fsub <8 x double> %176, %178
  %180 = getelementptr inbounds nuw i8, ptr %128, i64 192
  store <8 x double> %179, ptr %175, align 64, !tbaa !26
  %181 = getelementptr inbounds nuw i8, ptr %131, i64 4544
  %182 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %183 = getelementptr inbounds nuw i8, ptr %128, i64 256
  store <8 x double> %182, ptr %180, align 64, !tbaa !26
  %184 = getelementptr inbounds nuw i8, ptr %131, i64 4480
  %185 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %186 = getelementptr inbounds nuw i8, ptr %128, i64 320
  store <8 x double> %185, ptr %183, align 64, !tbaa !26
  %187 = getelementptr inbounds nuw i8, ptr %131, i64 4352
  %188 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %189 = getelementptr inbounds nuw i8, ptr %128, i64 384
  store <8 x double> %188, ptr %186, align 64, !tbaa !26
  %190 = getelementptr inbounds nuw i8, ptr %131, i64 4608
  %191 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %192 = getelementptr inbounds nuw i8, ptr %128, i64 448
  store <8 x double> %191, ptr %189, align 64, !tbaa !26
  %193 = getelementptr inbounds nuw i8, ptr %131, i64 9648
  %194 = load i64, ptr %126, align 8, !tbaa !22
  %195 = sitofp i64 %194 to double
  %196 = tail call double @llvm.fmuladd.f64(double %195, double 7.500000e-01, double -5.000000e-01)
  %197 = fcmp ogt double %196, 0.000000e+00
  %198 = select i1 %197, double %196, double 0.000000e+00
  %199 = fptosi double %198 to i64
  %200 = add nsw i64 %194, -2
  %201 = tail call i64 @llvm.smin.i64(i64 %200, i64 %199)
  %202 = sitofp i64 %201 to double
  %203 = fsub double %196, %202
  %204 = fsub double 1.000000e+00, %203
  %205 = insertelement <8 x double> poison, double %204, i64 0
  %206 = shufflevector <8 x double> %205, <8 x double> poison, <8 x i32> zeroinitializer
  %207 = load ptr, ptr %193, align 16, !tbaa !51
  %208 = getelementptr inbounds <8 x double>, ptr %207, i64 %201
  %209 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %210 = insertelement <8 x double> poison, double %203, i64 0
  %211 = shufflevector <8 x double> %210, <8 x double> poison, <8 x i32> zeroinitializer
  %212 = getelementptr i8, ptr %208, i64 64
  %213 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %214 = fmul <8 x double> %213, %211
  %215 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %206, <8 x double> %209, <8 x double> %214)
  store <8 x double> %215, ptr %192, align 64, !tbaa !26
  %216 = load i64, ptr %126, align 8, !tbaa !22
  %217 = sitofp i64 %216 to double
  %218 = tail call double @llvm.fmuladd.f64(double %217, double 5.000000e-01, double -5.000000e-01)
  %219 = fcmp ogt double %218, 0.000000e+00
  %220 = select i1 %219, double %218, double 0.000000e+00
  %221 = fptosi double %220 to i64
  %222 = add nsw i64 %216, -2
  %223 = tail call i64 @llvm.smin.i64(i64 %222, i64 %221)
  %224 = sitofp i64 %223 to double
  %225 = fsub double %218, %224
  %226 = fsub double 1.000000e+00, %225
  %227 = insertelement <8 x double> poison, double %226, i64 0
  %228 = shufflevector <8 x double> %227, <8 x double> poison, <8 x i32> zeroinitializer
  %229 = load ptr, ptr %193, align 16, !tbaa !51
  %230 = getelementptr inbounds <8 x double>, ptr %229, i64 %223
  %231 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %232 = insertelement <8 x double> poison, double %225, i64 0
  %233 = shufflevector <8 x double> %232, <8 x double> poison, <8 x i32> zeroinitializer
  %234 = getelementptr i8, ptr %230, i64 64
  %235 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %236 = fmul <8 x double> %235, %233
  %237 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %228, <8 x double> %231, <8 x double> %236)
  %238 = getelementptr inbounds nuw i8, ptr %128, i64 512
  store <8 x double> %237, ptr %238, align 64, !tbaa !26
  %239 = load i64, ptr %126, align 8, !tbaa !22
  %240 = sitofp i64 %239 to double
  %241 = tail call double @llvm.fmuladd.f64(double %240, double 2.500000e-01, double -5.000000e-01)
  %242 = fcmp ogt double %241, 0.000000e+00
  %243 = select i1 %242, double %241, double 0.000000e+00
  %244 = fptosi double %243 to i64
  %245 = add nsw i64 %239, -2
  %246 = tail call i64 @llvm.smin.i64(i64 %245, i64 %244)
  %247 = sitofp i64 %246 to double
  %248 = fsub double %241, %247
  %249 = fsub double 1.000000e+00, %248
  %250 = insertelement <8 x double> poison, double %249, i64 0
  %251 = shufflevector <8 x double> %250, <8 x double> poison, <8 x i32> zeroinitializer
  %252 = load ptr, ptr %193, align 16, !tbaa !51
  %253 = getelementptr inbounds <8 x double>, ptr %252, i64 %246
  %254 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %255 = insertelement <8 x double> poison, double %248, i64 0
  %256 = shufflevector <8 x double> %255, <8 x double> poison, <8 x i32> zeroinitializer
  %257 = getelementptr i8, ptr %253, i64 64
  %258 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %259 = fmul <8 x double> %258, %256
  %260 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %251, <8 x double> %254, <8 x double> %259)
  %261 = getelementptr inbounds nuw i8, ptr %128, i64 576
  store <8 x double> %260, ptr %261, align 64, !tbaa !26
  %262 = getelementptr inbounds nuw i8, ptr %128, i64 640
  %263 = add nuw nsw i64 %129, 1
  %264 = load i64, ptr %87, align 8, !tbaa !20
  %265 = icmp slt i64 %263, %264
  br i1 %265, label %127, label %266, !llvm.loop !205

266:                                              ; preds = %127, %107, %92
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %268 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %270 = load ptr, ptr %269, align 8
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %274 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %275 = load ptr, ptr %73, align 64
  %276 = icmp ult ptr %275, %86
  %277 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %278 = getelementptr inbounds nuw i8, ptr %93, i64 192
  %279 = extractelement <8 x i64> %72, i64 0
  %280 = icmp eq i64 %279, 0
  br i1 %280, label %418, label %281

281:                                              ; preds = %266
  %282 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %283 = load i64, ptr %282, align 64, !tbaa !30
  %284 = load i64, ptr %267, align 8, !tbaa !206
  %285 = icmp eq i64 %283, %284
  br i1 %285, label %288, label %286

286:                                              ; preds = %281
  %287 = load ptr, ptr %274, align 64, !tbaa !207
  br label %300

288:                                              ; preds = %281
  %289 = load i64, ptr %268, align 64, !tbaa !30
  %290 = load i64, ptr %271, align 8, !tbaa !41
  %291 = getelementptr inbounds i64, ptr %270, i64 %290
  store i64 %289, ptr %291, align 8, !tbaa !30
  %292 = load ptr, ptr %272, align 8, !tbaa !209
  %293 = load i64, ptr %271, align 8, !tbaa !41
  %294 = add nsw i64 %293, 1
  store i64 %294, ptr %271, align 8, !tbaa !41
  %295 = load i64, ptr %267, align 8, !tbaa !206
  %296 = mul nsw i64 %295, %293
  %297 = load i64, ptr %273, align 8, !tbaa !14
  %298 = mul nsw i64 %296, %297
  %299 = getelementptr inbounds double, ptr %292, i64 %298
  store ptr %299, ptr %274, align 64, !tbaa !207
  br label %300

300:                                              ; preds = %286, %288
  %301 = phi i64 [ %283, %286 ], [ 0, %288 ]
  %302 = phi ptr [ %287, %286 ], [ %299, %288 ]
  %303 = add nsw i64 %301, 1
  store i64 %303, ptr %282, align 64, !tbaa !30
  %304 = load i64, ptr %273, align 8, !tbaa !14
  %305 = mul nsw i64 %304, %301
  %306 = getelementptr inbounds double, ptr %302, i64 %305
  br i1 %276, label %365, label %307

307:                                              ; preds = %365, %300
  %308 = phi ptr [ %306, %300 ], [ %369, %365 ]
  %309 = load i64, ptr %277, align 64, !tbaa !16
  %310 = icmp sgt i64 %309, 0
  br i1 %310, label %311, label %353

311:                                              ; preds = %307
  %312 = and i64 %309, 3
  %313 = icmp ult i64 %309, 4
  br i1 %313, label %338, label %314

314:                                              ; preds = %311
  %315 = and i64 %309, 9223372036854775804
  br label %316

316:                                              ; preds = %316, %314
  %317 = phi i64 [ 0, %314 ], [ %335, %316 ]
  %318 = phi ptr [ %308, %314 ], [ %332, %316 ]
  %319 = phi i64 [ 0, %314 ], [ %336, %316 ]
  %320 = getelementptr i8, ptr %318, i64 8
  %321 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %322 = extractelement <8 x double> %321, i64 %317
  store double %322, ptr %318, align 8, !tbaa !42
  %323 = or disjoint i64 %317, 1
  %324 = getelementptr i8, ptr %318, i64 16
  %325 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %326 = extractelement <8 x double> %325, i64 %323
  store double %326, ptr %320, align 8, !tbaa !42
  %327 = or disjoint i64 %317, 2
  %328 = getelementptr i8, ptr %318, i64 24
  %329 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %330 = extractelement <8 x double> %329, i64 %327
  store double %330, ptr %324, align 8, !tbaa !42
  %331 = or disjoint i64 %317, 3
  %332 = getelementptr i8, ptr %318, i64 32
  %333 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %334 = extractelement <8 x double> %333, i64 %331
  store double %334, ptr %328, align 8, !tbaa !42
  %335 = add nuw nsw i64 %317, 4
  %336 = add i64 %319, 4
  %337 = icmp eq i64 %336, %315
  br i1 %337, label %338, label %316, !llvm.loop !210

338:                                              ; preds = %316, %311
  %339 = phi ptr [ poison, %311 ], [ %332, %316 ]
  %340 = phi i64 [ 0, %311 ], [ %335, %316 ]
  %341 = phi ptr [ %308, %311 ], [ %332, %316 ]
  %342 = icmp eq i64 %312, 0
  br i1 %342, label %353, label %343

343:                                              ; preds = %338, %343
  %344 = phi i64 [ %350, %343 ], [ %340, %338 ]
  %345 = phi ptr [ %347, %343 ], [ %341, %338 ]
  %346 = phi i64 [ %351, %343 ], [ 0, %338 ]
  %347 = getelementptr i8, ptr %345, i64 8
  %348 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %349 = extractelement <8 x double> %348, i64 %344
  store double %349, ptr %345, align 8, !tbaa !42
  %350 = add nuw nsw i64 %344, 1
  %351 = add i64 %346, 1
  %352 = icmp eq i64 %351, %312
  br i1 %352, label %353, label %343, !llvm.loop !218

353:                                              ; preds = %338, %343, %307
  %354 = phi ptr [ %308, %307 ], [ %339, %338 ], [ %347, %343 ]
  %355 = load i64, ptr %94, align 8, !tbaa !44
  %356 = icmp eq i64 %355, 0
  br i1 %356, label %418, label %357

357:                                              ; preds = %353
  %358 = load double, ptr %93, align 8, !tbaa !42
  %359 = getelementptr inbounds nuw i8, ptr %354, i64 8
  store double %358, ptr %354, align 8, !tbaa !42
  %360 = getelementptr inbounds nuw i8, ptr %93, i64 64
  %361 = load double, ptr %360, align 8, !tbaa !42
  %362 = getelementptr inbounds nuw i8, ptr %354, i64 16
  store double %361, ptr %359, align 8, !tbaa !42
  %363 = getelementptr inbounds nuw i8, ptr %93, i64 128
  %364 = load double, ptr %363, align 8, !tbaa !42
  store double %364, ptr %362, align 8, !tbaa !42
  br i1 %310, label %372, label %418

365:                                              ; preds = %300, %365
  %366 = phi ptr [ %370, %365 ], [ %275, %300 ]
  %367 = phi ptr [ %369, %365 ], [ %306, %300 ]
  %368 = load double, ptr %366, align 8, !tbaa !42
  %369 = getelementptr inbounds nuw i8, ptr %367, i64 8
  store double %368, ptr %367, align 8, !tbaa !42
  %370 = getelementptr inbounds nuw i8, ptr %366, i64 64
  %371 = icmp ult ptr %370, %86
  br i1 %371, label %365, label %307, !llvm.loop !213

372:                                              ; preds = %357
  %373 = getelementptr inbounds nuw i8, ptr %354, i64 24
  %374 = getelementptr inbounds nuw i8, ptr %93, i64 256
  %375 = getelementptr inbounds nuw i8, ptr %93, i64 320
  %376 = getelementptr inbounds nuw i8, ptr %93, i64 384
  %377 = getelementptr inbounds nuw i8, ptr %93, i64 448
  %378 = getelementptr inbounds nuw i8, ptr %93, i64 512
  %379 = getelementptr inbounds nuw i8, ptr %93, i64 576
  %380 = getelementptr inbounds nuw i8, ptr %93, i64 640
  %381 = getelementptr inbounds nuw i8, ptr %93, i64 704
  %382 = getelementptr inbounds nuw i8, ptr %93, i64 768
  br label %383

383:                                              ; preds = %372, %383
  %384 = phi i64 [ %416, %383 ], [ 0, %372 ]
  %385 = phi ptr [ %415, %383 ], [ %373, %372 ]
  %386 = load <8 x double>, ptr %278, align 64, !tbaa !26
  %387 = extractelement <8 x double> %386, i64 %384
  %388 = getelementptr inbounds nuw i8, ptr %385, i64 8
  store double %387, ptr %385, align 8, !tbaa !42
  %389 = load <8 x double>, ptr %374, align 64, !tbaa !26
  %390 = extractelement <8 x double> %389, i64 %384
  %391 = getelementptr inbounds nuw i8, ptr %385, i64 16
  store double %390, ptr %388, align 8, !tbaa !42
  %392 = load <8 x double>, ptr %375, align 64, !tbaa !26
  %393 = extractelement <8 x double> %392, i64 %384
  %394 = getelementptr inbounds nuw i8, ptr %385, i64 24
  store double %393, ptr %391, align 8, !tbaa !42
  %395 = load <8 x double>, ptr %376, align 64, !tbaa !26
  %396 = extractelement <8 x double> %395, i64 %384
  %397 = getelementptr inbounds nuw i8, ptr %385, i64 32
  store double %396, ptr %394, align 8, !tbaa !42
  %398 = load <8 x double>, ptr %377, align 64, !tbaa !26
  %399 = extractelement <8 x double> %398, i64 %384
  %400 = getelementptr inbounds nuw i8, ptr %385, i64 40
  store double %399, ptr %397, align 8, !tbaa !42
  %401 = load <8 x double>, ptr %378, align 64, !tbaa !26
  %402 = extractelement <8 x double> %401, i64 %384
  %403 = getelementptr inbounds nuw i8, ptr %385, i64 48
  store double %402, ptr %400, align 8, !tbaa !42
  %404 = load <8 x double>, ptr %379, align 64, !tbaa !26
  %405 = extractelement <8 x double> %404, i64 %384
  %406 = getelementptr inbounds nuw i8, ptr %385, i64 56
  store double %405, ptr %403, align 8, !tbaa !42
  %407 = load <8 x double>, ptr %380, align 64, !tbaa !26
  %408 = extractelement <8 x double> %407, i64 %384
  %409 = getelementptr inbounds nuw i8, ptr %385, i64 64
  store double %408, ptr %406, align 8, !tbaa !42
  %410 = load <8 x double>, ptr %381, align 64, !tbaa !26
  %411 = extractelement <8 x double> %410, i64 %384
  %412 = getelementptr inbounds nuw i8, ptr %385, i64 72
  store double %411, ptr %409, align 8, !tbaa !42
  %413 = load <8 x double>, ptr %382, align 64, !tbaa !26
  %414 = extractelement <8 x double> %413, i64 %384
  %415 = getelementptr inbounds nuw i8, ptr %385, i64 80
  store double %414, ptr %412, align 8, !tbaa !42
  %416 = add nuw nsw i64 %384, 1
  %417 = icmp eq i64 %416, %309
  br i1 %417, label %418, label %383, !llvm.loop !210

418:                                              ; preds = %383, %357, %353, %266
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #6
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6288) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 15) %2, i64 noundef %3) unnamed_addr #2 {
  %5 = alloca <8 x double>, align 64
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %7 = sext i32 %2 to i64
  %8 = getelementptr inbounds [8 x i64], ptr %6, i64 0, i64 %7
  store i64 %3, ptr %8, align 8, !tbaa !30
  %9 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %10 = load i64, ptr %9, align 8, !tbaa !206
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %12 = getelementptr inbounds [8 x i64], ptr %11, i64 0, i64 %7
  store i64 %10, ptr %12, align 8, !tbaa !30
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 6016
  %14 = shl nsw i32 %2, 1
  %15 = or disjoint i32 %14, 1
  %16 = sext i32 %15 to i64
  %17 = getelementptr inbounds [16 x i64], ptr %13, i64 0, i64 %16
  store i64 0, ptr %17, align 8, !tbaa !30
  %18 = sext i32 %14 to i64
  %19 = getelementptr inbounds [16 x i64], ptr %13, i64 0, i64 %18
  store i64 0, ptr %19, align 16, !tbaa !30
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 6208
  %21 = getelementptr inbounds [8 x double], ptr %20, i64 0, i64 %7
  store double 0.000000e+00, ptr %21, align 8, !tbaa !42
  %22 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %23 = load ptr, ptr %22, align 8, !tbaa !219
  %24 = mul i64 %3, 296
  %25 = getelementptr i8, ptr %23, i64 %24
  %26 = getelementptr double, ptr %0, i64 %7
  br label %42

27:                                               ; preds = %42
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %29 = load i64, ptr %28, align 8, !tbaa !20
  %30 = icmp sgt i64 %29, 0
  br i1 %30, label %31, label %62

31:                                               ; preds = %27
  %32 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  %33 = load ptr, ptr %32, align 8, !tbaa !28
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %36 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %40 = load ptr, ptr %39, align 8, !tbaa !220
  %41 = getelementptr inbounds double, ptr %5, i64 %7
  br label %161

42:                                               ; preds = %48, %4
  %43 = phi i64 [ 0, %4 ], [ %61, %48 ]
  %44 = getelementptr double, ptr %25, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !42
  %46 = getelementptr <8 x double>, ptr %26, i64 %43
  store double %45, ptr %46, align 8, !tbaa !42
  %47 = icmp eq i64 %43, 36
  br i1 %47, label %27, label %48, !llvm.loop !221

48:                                               ; preds = %42
  %49 = or disjoint i64 %43, 1
  %50 = getelementptr double, ptr %25, i64 %49
  %51 = load double, ptr %50, align 8, !tbaa !42
  %52 = getelementptr <8 x double>, ptr %26, i64 %49
  store double %51, ptr %52, align 8, !tbaa !42
  %53 = or disjoint i64 %43, 2
  %54 = getelementptr double, ptr %25, i64 %53
  %55 = load double, ptr %54, align 8, !tbaa !42
  %56 = getelementptr <8 x double>, ptr %26, i64 %53
  store double %55, ptr %56, align 8, !tbaa !42
  %57 = or disjoint i64 %43, 3
  %58 = getelementptr double, ptr %25, i64 %57
  %59 = load double, ptr %58, align 8, !tbaa !42
  %60 = getelementptr <8 x double>, ptr %26, i64 %57
  store double %59, ptr %60, align 8, !tbaa !42
  %61 = add nuw nsw i64 %43, 4
  br label %42

62:                                               ; preds = %610, %27
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %67 = getelementptr inbounds double, ptr %66, i64 %7
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %69 = getelementptr inbounds double, ptr %68, i64 %7
  %70 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %71 = getelementptr inbounds double, ptr %70, i64 %7
  %72 = getelementptr double, ptr %63, i64 %7
  %73 = getelementptr i8, ptr %72, i64 256
  store double 0.000000e+00, ptr %73, align 8, !tbaa !42
  %74 = getelementptr i8, ptr %72, i64 320
  store double 0.000000e+00, ptr %74, align 8, !tbaa !42
  %75 = load double, ptr %67, align 8, !tbaa !42
  store double %75, ptr %72, align 8, !tbaa !42
  %76 = load double, ptr %69, align 8, !tbaa !42
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 2688
  %78 = getelementptr inbounds double, ptr %77, i64 %7
  store double %76, ptr %78, align 8, !tbaa !42
  %79 = load double, ptr %71, align 8, !tbaa !42
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %81 = getelementptr inbounds double, ptr %80, i64 %7
  store double %79, ptr %81, align 8, !tbaa !42
  %82 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %83 = getelementptr inbounds double, ptr %82, i64 %7
  store double %79, ptr %83, align 8, !tbaa !42
  %84 = getelementptr double, ptr %64, i64 %7
  %85 = getelementptr i8, ptr %84, i64 256
  store double 0.000000e+00, ptr %85, align 8, !tbaa !42
  %86 = getelementptr i8, ptr %84, i64 320
  store double 0.000000e+00, ptr %86, align 8, !tbaa !42
  store double %75, ptr %84, align 8, !tbaa !42
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %88 = getelementptr inbounds double, ptr %87, i64 %7
  store double %76, ptr %88, align 8, !tbaa !42
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %90 = getelementptr inbounds double, ptr %89, i64 %7
  store double %79, ptr %90, align 8, !tbaa !42
  %91 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %92 = getelementptr inbounds double, ptr %91, i64 %7
  store double %79, ptr %92, align 8, !tbaa !42
  %93 = getelementptr double, ptr %65, i64 %7
  %94 = getelementptr i8, ptr %93, i64 256
  store double 0.000000e+00, ptr %94, align 8, !tbaa !42
  %95 = getelementptr i8, ptr %93, i64 320
  store double 0.000000e+00, ptr %95, align 8, !tbaa !42
  store double %75, ptr %93, align 8, !tbaa !42
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 3456
  %97 = getelementptr inbounds double, ptr %96, i64 %7
  store double %76, ptr %97, align 8, !tbaa !42
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %99 = getelementptr inbounds double, ptr %98, i64 %7
  store double %79, ptr %99, align 8, !tbaa !42
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %101 = getelementptr inbounds double, ptr %100, i64 %7
  store double %79, ptr %101, align 8, !tbaa !42
  %102 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %103 = getelementptr inbounds double, ptr %102, i64 %7
  %104 = load double, ptr %103, align 8, !tbaa !42
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %106 = getelementptr inbounds double, ptr %105, i64 %7
  store double %104, ptr %106, align 8, !tbaa !42
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %108 = getelementptr inbounds double, ptr %107, i64 %7
  store double %104, ptr %108, align 8, !tbaa !42
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %110 = getelementptr inbounds double, ptr %109, i64 %7
  store double 1.000000e+09, ptr %110, align 8, !tbaa !42
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %112 = getelementptr inbounds double, ptr %111, i64 %7
  store double 0.000000e+00, ptr %112, align 8, !tbaa !42
  %113 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %114 = getelementptr inbounds double, ptr %113, i64 %7
  %115 = load double, ptr %114, align 8, !tbaa !42
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %117 = getelementptr inbounds double, ptr %116, i64 %7
  store double %115, ptr %117, align 8, !tbaa !42
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %119 = getelementptr inbounds double, ptr %118, i64 %7
  store double %115, ptr %119, align 8, !tbaa !42
  %120 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %121 = getelementptr inbounds double, ptr %120, i64 %7
  %122 = load double, ptr %121, align 8, !tbaa !42
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %124 = getelementptr inbounds double, ptr %123, i64 %7
  store double %122, ptr %124, align 8, !tbaa !42
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 4480
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 4864
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 4928
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 5184
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 5248
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %136 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %137 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %138 = getelementptr inbounds double, ptr %125, i64 %7
  store double 0.000000e+00, ptr %138, align 8, !tbaa !42
  %139 = getelementptr inbounds double, ptr %126, i64 %7
  store double 0.000000e+00, ptr %139, align 8, !tbaa !42
  %140 = getelementptr inbounds double, ptr %127, i64 %7
  store double 0.000000e+00, ptr %140, align 8, !tbaa !42
  %141 = getelementptr inbounds double, ptr %128, i64 %7
  store double 0.000000e+00, ptr %141, align 8, !tbaa !42
  %142 = getelementptr inbounds double, ptr %129, i64 %7
  store double 0.000000e+00, ptr %142, align 8, !tbaa !42
  %143 = getelementptr inbounds double, ptr %130, i64 %7
  store double 0.000000e+00, ptr %143, align 8, !tbaa !42
  %144 = getelementptr inbounds double, ptr %131, i64 %7
  store double 0.000000e+00, ptr %144, align 8, !tbaa !42
  %145 = getelementptr inbounds double, ptr %132, i64 %7
  store double 0.000000e+00, ptr %145, align 8, !tbaa !42
  %146 = getelementptr inbounds double, ptr %133, i64 %7
  store double 0.000000e+00, ptr %146, align 8, !tbaa !42
  %147 = getelementptr inbounds double, ptr %134, i64 %7
  store double 0.000000e+00, ptr %147, align 8, !tbaa !42
  %148 = getelementptr inbounds double, ptr %135, i64 %7
  store double 0.000000e+00, ptr %148, align 8, !tbaa !42
  %149 = getelementptr inbounds double, ptr %136, i64 %7
  store double 0.000000e+00, ptr %149, align 8, !tbaa !42
  %150 = getelementptr inbounds double, ptr %137, i64 %7
  store double 0.000000e+00, ptr %150, align 8, !tbaa !42
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %152 = getelementptr inbounds i64, ptr %151, i64 %7
  store i64 0, ptr %152, align 8, !tbaa !30
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %154 = getelementptr inbounds i64, ptr %153, i64 %7
  store i64 0, ptr %154, align 8, !tbaa !30
  %155 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %156 = getelementptr inbounds i64, ptr %155, i64 %7
  store i64 -1, ptr %156, align 8, !tbaa !30
  %157 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %158 = getelementptr inbounds i64, ptr %157, i64 %7
  store i64 -1, ptr %158, align 8, !tbaa !30
  %159 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %160 = getelementptr inbounds i64, ptr %159, i64 %7
  store i64 -1, ptr %160, align 8, !tbaa !30
  ret void

161:                                              ; preds = %31, %610
  %162 = phi i64 [ 0, %31 ], [ %611, %610 ]
  %163 = getelementptr inbounds nuw %struct.Piece, ptr %33, i64 %162
  %164 = load i64, ptr %34, align 64, !tbaa !16
  %165 = icmp sgt i64 %164, %7
  %166 = load i64, ptr %35, align 16, !tbaa !21
  %167 = load i64, ptr %36, align 8, !tbaa !22
  %168 = mul nsw i64 %164, %3
  %169 = select i1 %165, i64 %7, i64 0
  %170 = add nsw i64 %169, %168
  %171 = getelementptr inbounds nuw i8, ptr %163, i64 9472
  %172 = load i64, ptr %171, align 64, !tbaa !31
  %173 = load ptr, ptr %37, align 8, !tbaa !222
  %174 = mul i64 %170, 416
  %175 = getelementptr i8, ptr %173, i64 %174
  %176 = getelementptr double, ptr %163, i64 %7
  br label %179

177:                                              ; preds = %179
  %178 = icmp eq i64 %172, 0
  br i1 %165, label %201, label %198

179:                                              ; preds = %179, %161
  %180 = phi i64 [ 0, %161 ], [ %196, %179 ]
  %181 = getelementptr double, ptr %175, i64 %180
  %182 = load double, ptr %181, align 8, !tbaa !42
  %183 = getelementptr <8 x double>, ptr %176, i64 %180
  store double %182, ptr %183, align 8, !tbaa !42
  %184 = or disjoint i64 %180, 1
  %185 = getelementptr double, ptr %175, i64 %184
  %186 = load double, ptr %185, align 8, !tbaa !42
  %187 = getelementptr <8 x double>, ptr %176, i64 %184
  store double %186, ptr %187, align 8, !tbaa !42
  %188 = or disjoint i64 %180, 2
  %189 = getelementptr double, ptr %175, i64 %188
  %190 = load double, ptr %189, align 8, !tbaa !42
  %191 = getelementptr <8 x double>, ptr %176, i64 %188
  store double %190, ptr %191, align 8, !tbaa !42
  %192 = or disjoint i64 %180, 3
  %193 = getelementptr double, ptr %175, i64 %192
  %194 = load double, ptr %193, align 8, !tbaa !42
  %195 = getelementptr <8 x double>, ptr %176, i64 %192
  store double %194, ptr %195, align 8, !tbaa !42
  %196 = add nuw nsw i64 %180, 4
  %197 = icmp eq i64 %196, 52
  br i1 %197, label %177, label %179, !llvm.loop !223

198:                                              ; preds = %177
  %199 = getelementptr inbounds nuw i8, ptr %163, i64 128
  %200 = getelementptr inbounds double, ptr %199, i64 %7
  store double 0.000000e+00, ptr %200, align 8, !tbaa !42
  br label %201

201:                                              ; preds = %198, %177
  %202 = load ptr, ptr %38, align 8, !tbaa !224
  %203 = getelementptr inbounds i64, ptr %40, i64 %170
  %204 = load i64, ptr %203, align 8, !tbaa !30
  %205 = mul nsw i64 %166, 3
  %206 = add nsw i64 %166, 1
  %207 = select i1 %178, i64 0, i64 2
  %208 = shl i64 %206, %207
  %209 = add nsw i64 %208, %205
  %210 = mul nsw i64 %204, %209
  %211 = getelementptr inbounds double, ptr %202, i64 %210
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #6
  %212 = getelementptr inbounds nuw i8, ptr %163, i64 1344
  %213 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %214 = getelementptr inbounds nuw i8, ptr %163, i64 192
  %215 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %216 = getelementptr inbounds nuw i8, ptr %163, i64 256
  %217 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %218 = getelementptr inbounds nuw i8, ptr %163, i64 320
  %219 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %220 = fmul <8 x double> %213, %219
  %221 = fmul <8 x double> %220, splat (double 0x3FD5555555555555)
  %222 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %217, <8 x double> splat (double 5.000000e-01), <8 x double> %221)
  %223 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %213, <8 x double> %222, <8 x double> %215)
  %224 = fmul <8 x double> %213, %223
  store <8 x double> %224, ptr %5, align 64, !tbaa !26
  %225 = getelementptr inbounds double, ptr %212, i64 %7
  %226 = load double, ptr %225, align 8, !tbaa !42
  %227 = load double, ptr %41, align 8, !tbaa !42
  %228 = load double, ptr %176, align 8, !tbaa !42
  br i1 %178, label %229, label %234

229:                                              ; preds = %201
  %230 = getelementptr inbounds nuw i8, ptr %163, i64 9480
  %231 = getelementptr inbounds [8 x ptr], ptr %230, i64 0, i64 %7
  %232 = load ptr, ptr %231, align 8, !tbaa !207
  %233 = icmp ne ptr %232, %211
  br label %234

234:                                              ; preds = %229, %201
  %235 = phi i1 [ true, %201 ], [ %233, %229 ]
  %236 = getelementptr inbounds nuw i8, ptr %163, i64 9480
  %237 = getelementptr inbounds [8 x ptr], ptr %236, i64 0, i64 %7
  store ptr %211, ptr %237, align 8, !tbaa !207
  %238 = icmp sgt i64 %166, 0
  %239 = select i1 %238, i1 %235, i1 false
  br i1 %239, label %240, label %270

240:                                              ; preds = %234
  %241 = getelementptr inbounds nuw i8, ptr %163, i64 9608
  %242 = load ptr, ptr %241, align 8, !tbaa !76
  %243 = getelementptr double, ptr %242, i64 %7
  %244 = getelementptr double, ptr %211, i64 %166
  %245 = getelementptr inbounds nuw i8, ptr %163, i64 9616
  %246 = load ptr, ptr %245, align 16, !tbaa !48
  %247 = getelementptr double, ptr %246, i64 %7
  %248 = shl i64 %166, 4
  %249 = getelementptr i8, ptr %211, i64 %248
  %250 = getelementptr inbounds nuw i8, ptr %163, i64 9624
  %251 = load ptr, ptr %250, align 8, !tbaa !189
  %252 = getelementptr double, ptr %251, i64 %7
  %253 = and i64 %166, 1
  %254 = icmp eq i64 %166, 1
  br i1 %254, label %257, label %255

255:                                              ; preds = %240
  %256 = and i64 %166, 9223372036854775806
  br label %282

257:                                              ; preds = %282, %240
  %258 = phi i64 [ 0, %240 ], [ %304, %282 ]
  %259 = icmp eq i64 %253, 0
  br i1 %259, label %270, label %260

260:                                              ; preds = %257
  %261 = getelementptr inbounds nuw double, ptr %211, i64 %258
  %262 = load double, ptr %261, align 8, !tbaa !42
  %263 = getelementptr <8 x double>, ptr %243, i64 %258
  store double %262, ptr %263, align 8, !tbaa !42
  %264 = getelementptr double, ptr %244, i64 %258
  %265 = load double, ptr %264, align 8, !tbaa !42
  %266 = getelementptr <8 x double>, ptr %247, i64 %258
  store double %265, ptr %266, align 8, !tbaa !42
  %267 = getelementptr double, ptr %249, i64 %258
  %268 = load double, ptr %267, align 8, !tbaa !42
  %269 = getelementptr <8 x double>, ptr %252, i64 %258
  store double %268, ptr %269, align 8, !tbaa !42
  br label %270

270:                                              ; preds = %260, %257, %234
  %271 = icmp sgt i64 %208, 0
  %272 = select i1 %271, i1 %235, i1 false
  br i1 %272, label %273, label %319

273:                                              ; preds = %270
  %274 = getelementptr double, ptr %211, i64 %205
  %275 = getelementptr inbounds nuw i8, ptr %163, i64 9632
  %276 = load ptr, ptr %275, align 32, !tbaa !37
  %277 = getelementptr double, ptr %276, i64 %7
  %278 = and i64 %208, 3
  %279 = icmp ult i64 %208, 4
  br i1 %279, label %307, label %280

280:                                              ; preds = %273
  %281 = and i64 %208, 9223372036854775804
  br label %328

282:                                              ; preds = %282, %255
  %283 = phi i64 [ 0, %255 ], [ %304, %282 ]
  %284 = phi i64 [ 0, %255 ], [ %305, %282 ]
  %285 = getelementptr inbounds nuw double, ptr %211, i64 %283
  %286 = load double, ptr %285, align 8, !tbaa !42
  %287 = getelementptr <8 x double>, ptr %243, i64 %283
  store double %286, ptr %287, align 8, !tbaa !42
  %288 = getelementptr double, ptr %244, i64 %283
  %289 = load double, ptr %288, align 8, !tbaa !42
  %290 = getelementptr <8 x double>, ptr %247, i64 %283
  store double %289, ptr %290, align 8, !tbaa !42
  %291 = getelementptr double, ptr %249, i64 %283
  %292 = load double, ptr %291, align 8, !tbaa !42
  %293 = getelementptr <8 x double>, ptr %252, i64 %283
  store double %292, ptr %293, align 8, !tbaa !42
  %294 = or disjoint i64 %283, 1
  %295 = getelementptr inbounds nuw double, ptr %211, i64 %294
  %296 = load double, ptr %295, align 8, !tbaa !42
  %297 = getelementptr <8 x double>, ptr %243, i64 %294
  store double %296, ptr %297, align 8, !tbaa !42
  %298 = getelementptr double, ptr %244, i64 %294
  %299 = load double, ptr %298, align 8, !tbaa !42
  %300 = getelementptr <8 x double>, ptr %247, i64 %294
  store double %299, ptr %300, align 8, !tbaa !42
  %301 = getelementptr double, ptr %249, i64 %294
  %302 = load double, ptr %301, align 8, !tbaa !42
  %303 = getelementptr <8 x double>, ptr %252, i64 %294
  store double %302, ptr %303, align 8, !tbaa !42
  %304 = add nuw nsw i64 %283, 2
  %305 = add i64 %284, 2
  %306 = icmp eq i64 %305, %256
  br i1 %306, label %257, label %282, !llvm.loop !225

307:                                              ; preds = %328, %273
  %308 = phi i64 [ 0, %273 ], [ %346, %328 ]
  %309 = icmp eq i64 %278, 0
  br i1 %309, label %319, label %310

310:                                              ; preds = %307, %310
  %311 = phi i64 [ %316, %310 ], [ %308, %307 ]
  %312 = phi i64 [ %317, %310 ], [ 0, %307 ]
  %313 = getelementptr double, ptr %274, i64 %311
  %314 = load double, ptr %313, align 8, !tbaa !42
  %315 = getelementptr <8 x double>, ptr %277, i64 %311
  store double %314, ptr %315, align 8, !tbaa !42
  %316 = add nuw nsw i64 %311, 1
  %317 = add i64 %312, 1
  %318 = icmp eq i64 %317, %278
  br i1 %318, label %319, label %310, !llvm.loop !226

319:                                              ; preds = %307, %310, %270
  %320 = icmp ne i64 %172, 0
  %321 = icmp sgt i64 %166, -1
  %322 = select i1 %320, i1 %321, i1 false
  br i1 %322, label %323, label %349

323:                                              ; preds = %319
  %324 = fdiv double 1.000000e+00, %228
  %325 = getelementptr inbounds nuw i8, ptr %163, i64 9632
  %326 = load ptr, ptr %325, align 32, !tbaa !37
  %327 = getelementptr double, ptr %326, i64 %7
  br label %489

328:                                              ; preds = %328, %280
  %329 = phi i64 [ 0, %280 ], [ %346, %328 ]
  %330 = phi i64 [ 0, %280 ], [ %347, %328 ]
  %331 = getelementptr double, ptr %274, i64 %329
  %332 = load double, ptr %331, align 8, !tbaa !42
  %333 = getelementptr <8 x double>, ptr %277, i64 %329
  store double %332, ptr %333, align 8, !tbaa !42
  %334 = or disjoint i64 %329, 1
  %335 = getelementptr double, ptr %274, i64 %334
  %336 = load double, ptr %335, align 8, !tbaa !42
  %337 = getelementptr <8 x double>, ptr %277, i64 %334
  store double %336, ptr %337, align 8, !tbaa !42
  %338 = or disjoint i64 %329, 2
  %339 = getelementptr double, ptr %274, i64 %338
  %340 = load double, ptr %339, align 8, !tbaa !42
  %341 = getelementptr <8 x double>, ptr %277, i64 %338
  store double %340, ptr %341, align 8, !tbaa !42
  %342 = or disjoint i64 %329, 3
  %343 = getelementptr double, ptr %274, i64 %342
  %344 = load double, ptr %343, align 8, !tbaa !42
  %345 = getelementptr <8 x double>, ptr %277, i64 %342
  store double %344, ptr %345, align 8, !tbaa !42
  %346 = add nuw nsw i64 %329, 4
  %347 = add i64 %330, 4
  %348 = icmp eq i64 %347, %281
  br i1 %348, label %307, label %328, !llvm.loop !227

349:                                              ; preds = %489, %319
  %350 = getelementptr inbounds nuw i8, ptr %163, i64 2944
  %351 = getelementptr inbounds double, ptr %350, i64 %7
  %352 = load double, ptr %351, align 8, !tbaa !42
  %353 = getelementptr inbounds nuw i8, ptr %163, i64 3008
  %354 = getelementptr inbounds double, ptr %353, i64 %7
  %355 = load double, ptr %354, align 8, !tbaa !42
  %356 = getelementptr inbounds nuw i8, ptr %163, i64 3072
  %357 = getelementptr inbounds double, ptr %356, i64 %7
  %358 = load double, ptr %357, align 8, !tbaa !42
  %359 = getelementptr inbounds nuw i8, ptr %163, i64 3136
  %360 = getelementptr inbounds double, ptr %359, i64 %7
  %361 = load double, ptr %360, align 8, !tbaa !42
  %362 = tail call double @llvm.fmuladd.f64(double %228, double %361, double %358)
  %363 = tail call double @llvm.fmuladd.f64(double %228, double %362, double %355)
  %364 = tail call double @llvm.fmuladd.f64(double %228, double %363, double %352)
  %365 = getelementptr inbounds nuw i8, ptr %163, i64 1216
  %366 = getelementptr inbounds double, ptr %365, i64 %7
  %367 = load double, ptr %366, align 8, !tbaa !42
  %368 = getelementptr inbounds nuw i8, ptr %163, i64 1792
  %369 = getelementptr inbounds double, ptr %368, i64 %7
  %370 = load double, ptr %369, align 8, !tbaa !42
  %371 = getelementptr inbounds nuw i8, ptr %163, i64 1920
  %372 = getelementptr inbounds double, ptr %371, i64 %7
  %373 = load double, ptr %372, align 8, !tbaa !42
  %374 = fsub double %370, %373
  %375 = fmul double %367, %374
  %376 = getelementptr inbounds nuw i8, ptr %163, i64 3328
  %377 = getelementptr inbounds nuw i8, ptr %163, i64 4224
  %378 = getelementptr inbounds nuw i8, ptr %163, i64 5120
  %379 = getelementptr inbounds nuw i8, ptr %163, i64 1280
  %380 = getelementptr inbounds double, ptr %379, i64 %7
  %381 = getelementptr inbounds nuw i8, ptr %163, i64 1408
  %382 = getelementptr inbounds double, ptr %381, i64 %7
  %383 = getelementptr double, ptr %376, i64 %7
  %384 = getelementptr i8, ptr %383, i64 320
  store double 0.000000e+00, ptr %384, align 8, !tbaa !42
  %385 = getelementptr i8, ptr %383, i64 384
  store double 0.000000e+00, ptr %385, align 8, !tbaa !42
  %386 = getelementptr i8, ptr %383, i64 448
  store double 0.000000e+00, ptr %386, align 8, !tbaa !42
  %387 = getelementptr i8, ptr %383, i64 512
  store double 0.000000e+00, ptr %387, align 8, !tbaa !42
  %388 = getelementptr i8, ptr %383, i64 576
  store double 0.000000e+00, ptr %388, align 8, !tbaa !42
  %389 = getelementptr i8, ptr %383, i64 704
  store double 0.000000e+00, ptr %389, align 8, !tbaa !42
  %390 = getelementptr i8, ptr %383, i64 768
  store double 0.000000e+00, ptr %390, align 8, !tbaa !42
  store double %228, ptr %383, align 8, !tbaa !42
  %391 = getelementptr inbounds nuw i8, ptr %163, i64 3392
  %392 = getelementptr inbounds double, ptr %391, i64 %7
  store double %370, ptr %392, align 8, !tbaa !42
  %393 = load double, ptr %380, align 8, !tbaa !42
  %394 = getelementptr inbounds nuw i8, ptr %163, i64 3456
  %395 = getelementptr inbounds double, ptr %394, i64 %7
  store double %393, ptr %395, align 8, !tbaa !42
  %396 = getelementptr inbounds nuw i8, ptr %163, i64 3520
  %397 = getelementptr inbounds double, ptr %396, i64 %7
  store double %375, ptr %397, align 8, !tbaa !42
  %398 = getelementptr inbounds nuw i8, ptr %163, i64 3968
  %399 = getelementptr inbounds double, ptr %398, i64 %7
  store double %226, ptr %399, align 8, !tbaa !42
  %400 = load double, ptr %382, align 8, !tbaa !42
  %401 = getelementptr inbounds nuw i8, ptr %163, i64 3584
  %402 = getelementptr inbounds double, ptr %401, i64 %7
  store double %400, ptr %402, align 8, !tbaa !42
  %403 = getelementptr inbounds nuw i8, ptr %163, i64 4160
  %404 = getelementptr inbounds double, ptr %403, i64 %7
  store double %364, ptr %404, align 8, !tbaa !42
  %405 = getelementptr double, ptr %377, i64 %7
  %406 = getelementptr i8, ptr %405, i64 320
  store double 0.000000e+00, ptr %406, align 8, !tbaa !42
  %407 = getelementptr i8, ptr %405, i64 384
  store double 0.000000e+00, ptr %407, align 8, !tbaa !42
  %408 = getelementptr i8, ptr %405, i64 448
  store double 0.000000e+00, ptr %408, align 8, !tbaa !42
  %409 = getelementptr i8, ptr %405, i64 512
  store double 0.000000e+00, ptr %409, align 8, !tbaa !42
  %410 = getelementptr i8, ptr %405, i64 576
  store double 0.000000e+00, ptr %410, align 8, !tbaa !42
  %411 = getelementptr i8, ptr %405, i64 704
  store double 0.000000e+00, ptr %411, align 8, !tbaa !42
  %412 = getelementptr i8, ptr %405, i64 768
  store double 0.000000e+00, ptr %412, align 8, !tbaa !42
  store double %228, ptr %405, align 8, !tbaa !42
  %413 = getelementptr inbounds nuw i8, ptr %163, i64 4288
  %414 = getelementptr inbounds double, ptr %413, i64 %7
  store double %370, ptr %414, align 8, !tbaa !42
  %415 = getelementptr inbounds nuw i8, ptr %163, i64 4352
  %416 = getelementptr inbounds double, ptr %415, i64 %7
  store double %393, ptr %416, align 8, !tbaa !42
  %417 = getelementptr inbounds nuw i8, ptr %163, i64 4416
  %418 = getelementptr inbounds double, ptr %417, i64 %7
  store double %375, ptr %418, align 8, !tbaa !42
  %419 = getelementptr inbounds nuw i8, ptr %163, i64 4864
  %420 = getelementptr inbounds double, ptr %419, i64 %7
  store double %226, ptr %420, align 8, !tbaa !42
  %421 = getelementptr inbounds nuw i8, ptr %163, i64 4480
  %422 = getelementptr inbounds double, ptr %421, i64 %7
  store double %400, ptr %422, align 8, !tbaa !42
  %423 = getelementptr inbounds nuw i8, ptr %163, i64 5056
  %424 = getelementptr inbounds double, ptr %423, i64 %7
  store double %364, ptr %424, align 8, !tbaa !42
  %425 = getelementptr double, ptr %378, i64 %7
  %426 = getelementptr i8, ptr %425, i64 320
  store double 0.000000e+00, ptr %426, align 8, !tbaa !42
  %427 = getelementptr i8, ptr %425, i64 384
  store double 0.000000e+00, ptr %427, align 8, !tbaa !42
  %428 = getelementptr i8, ptr %425, i64 448
  store double 0.000000e+00, ptr %428, align 8, !tbaa !42
  %429 = getelementptr i8, ptr %425, i64 512
  store double 0.000000e+00, ptr %429, align 8, !tbaa !42
  %430 = getelementptr i8, ptr %425, i64 576
  store double 0.000000e+00, ptr %430, align 8, !tbaa !42
  %431 = getelementptr i8, ptr %425, i64 704
  store double 0.000000e+00, ptr %431, align 8, !tbaa !42
  %432 = getelementptr i8, ptr %425, i64 768
  store double 0.000000e+00, ptr %432, align 8, !tbaa !42
  store double %228, ptr %425, align 8, !tbaa !42
  %433 = load double, ptr %369, align 8, !tbaa !42
  %434 = getelementptr inbounds nuw i8, ptr %163, i64 5184
  %435 = getelementptr inbounds double, ptr %434, i64 %7
  store double %433, ptr %435, align 8, !tbaa !42
  %436 = getelementptr inbounds nuw i8, ptr %163, i64 5248
  %437 = getelementptr inbounds double, ptr %436, i64 %7
  store double %393, ptr %437, align 8, !tbaa !42
  %438 = getelementptr inbounds nuw i8, ptr %163, i64 5312
  %439 = getelementptr inbounds double, ptr %438, i64 %7
  store double %375, ptr %439, align 8, !tbaa !42
  %440 = getelementptr inbounds nuw i8, ptr %163, i64 5760
  %441 = getelementptr inbounds double, ptr %440, i64 %7
  store double %226, ptr %441, align 8, !tbaa !42
  %442 = getelementptr inbounds nuw i8, ptr %163, i64 5376
  %443 = getelementptr inbounds double, ptr %442, i64 %7
  store double %400, ptr %443, align 8, !tbaa !42
  %444 = getelementptr inbounds nuw i8, ptr %163, i64 5952
  %445 = getelementptr inbounds double, ptr %444, i64 %7
  store double %364, ptr %445, align 8, !tbaa !42
  %446 = load double, ptr %380, align 8, !tbaa !42
  %447 = fadd double %375, %446
  %448 = getelementptr inbounds nuw i8, ptr %163, i64 1984
  %449 = getelementptr inbounds double, ptr %448, i64 %7
  store double %447, ptr %449, align 8, !tbaa !42
  %450 = fcmp ogt double %446, 0.000000e+00
  %451 = fdiv double 1.000000e+00, %446
  %452 = select i1 %450, double %451, double 0.000000e+00
  %453 = getelementptr inbounds nuw i8, ptr %163, i64 8640
  %454 = getelementptr inbounds double, ptr %453, i64 %7
  store double %452, ptr %454, align 8, !tbaa !42
  %455 = getelementptr inbounds nuw i8, ptr %163, i64 1088
  %456 = getelementptr inbounds double, ptr %455, i64 %7
  %457 = load double, ptr %456, align 8, !tbaa !42
  %458 = fdiv double 1.000000e+00, %457
  %459 = getelementptr inbounds nuw i8, ptr %163, i64 8704
  %460 = getelementptr inbounds double, ptr %459, i64 %7
  store double %458, ptr %460, align 8, !tbaa !42
  %461 = load double, ptr %366, align 8, !tbaa !42
  %462 = fdiv double 1.000000e+00, %461
  %463 = getelementptr inbounds nuw i8, ptr %163, i64 8768
  %464 = getelementptr inbounds double, ptr %463, i64 %7
  store double %462, ptr %464, align 8, !tbaa !42
  %465 = getelementptr inbounds nuw i8, ptr %163, i64 6400
  %466 = getelementptr inbounds nuw i8, ptr %163, i64 7744
  %467 = getelementptr inbounds nuw i8, ptr %163, i64 7808
  %468 = getelementptr inbounds nuw i8, ptr %163, i64 8512
  %469 = getelementptr inbounds double, ptr %465, i64 %7
  store double %226, ptr %469, align 8, !tbaa !42
  %470 = getelementptr inbounds double, ptr %466, i64 %7
  store double %226, ptr %470, align 8, !tbaa !42
  %471 = getelementptr inbounds double, ptr %467, i64 %7
  store double %226, ptr %471, align 8, !tbaa !42
  %472 = getelementptr inbounds double, ptr %468, i64 %7
  store double %226, ptr %472, align 8, !tbaa !42
  %473 = getelementptr inbounds nuw i8, ptr %163, i64 6464
  %474 = getelementptr inbounds nuw i8, ptr %163, i64 6528
  %475 = getelementptr inbounds nuw i8, ptr %163, i64 8576
  %476 = getelementptr inbounds nuw i8, ptr %163, i64 8448
  %477 = getelementptr inbounds nuw i8, ptr %163, i64 8192
  %478 = getelementptr inbounds double, ptr %473, i64 %7
  store double 0.000000e+00, ptr %478, align 8, !tbaa !42
  %479 = getelementptr inbounds double, ptr %474, i64 %7
  store double 0.000000e+00, ptr %479, align 8, !tbaa !42
  %480 = getelementptr inbounds double, ptr %475, i64 %7
  store double 0.000000e+00, ptr %480, align 8, !tbaa !42
  %481 = getelementptr inbounds double, ptr %476, i64 %7
  store double 0.000000e+00, ptr %481, align 8, !tbaa !42
  %482 = getelementptr inbounds double, ptr %477, i64 %7
  store double 0.000000e+00, ptr %482, align 8, !tbaa !42
  %483 = getelementptr inbounds nuw i8, ptr %163, i64 9280
  %484 = getelementptr inbounds i64, ptr %483, i64 %7
  store i64 0, ptr %484, align 8, !tbaa !30
  %485 = getelementptr inbounds nuw i8, ptr %163, i64 9344
  %486 = getelementptr inbounds i64, ptr %485, i64 %7
  store i64 -1, ptr %486, align 8, !tbaa !30
  %487 = getelementptr inbounds nuw i8, ptr %163, i64 9408
  %488 = getelementptr inbounds i64, ptr %487, i64 %7
  store i64 0, ptr %488, align 8, !tbaa !30
  br i1 %238, label %511, label %530

489:                                              ; preds = %323, %489
  %490 = phi i64 [ 0, %323 ], [ %509, %489 ]
  %491 = icmp slt i64 %490, %172
  %492 = select i1 %491, double %324, double 1.000000e+00
  %493 = shl i64 %490, 8
  %494 = getelementptr i8, ptr %327, i64 %493
  %495 = load double, ptr %494, align 8, !tbaa !42
  %496 = fmul double %492, %495
  store double %496, ptr %494, align 8, !tbaa !42
  %497 = fdiv double %492, %228
  %498 = getelementptr i8, ptr %494, i64 64
  %499 = load double, ptr %498, align 8, !tbaa !42
  %500 = fmul double %497, %499
  store double %500, ptr %498, align 8, !tbaa !42
  %501 = fdiv double %497, %228
  %502 = getelementptr i8, ptr %494, i64 128
  %503 = load double, ptr %502, align 8, !tbaa !42
  %504 = fmul double %501, %503
  store double %504, ptr %502, align 8, !tbaa !42
  %505 = fdiv double %501, %228
  %506 = getelementptr i8, ptr %494, i64 192
  %507 = load double, ptr %506, align 8, !tbaa !42
  %508 = fmul double %505, %507
  store double %508, ptr %506, align 8, !tbaa !42
  %509 = add nuw nsw i64 %490, 1
  %510 = icmp slt i64 %490, %166
  br i1 %510, label %489, label %349, !llvm.loop !228

511:                                              ; preds = %349
  %512 = load i64, ptr %171, align 64, !tbaa !31
  %513 = getelementptr inbounds nuw i8, ptr %163, i64 1024
  %514 = getelementptr inbounds double, ptr %513, i64 %7
  %515 = getelementptr inbounds nuw i8, ptr %163, i64 9560
  %516 = load ptr, ptr %515, align 8, !tbaa !65
  %517 = getelementptr double, ptr %516, i64 %7
  %518 = getelementptr inbounds nuw i8, ptr %163, i64 9552
  %519 = load ptr, ptr %518, align 16, !tbaa !47
  %520 = getelementptr double, ptr %519, i64 %7
  %521 = getelementptr inbounds nuw i8, ptr %163, i64 9544
  %522 = load ptr, ptr %521, align 8, !tbaa !86
  %523 = getelementptr double, ptr %522, i64 %7
  %524 = getelementptr inbounds nuw i8, ptr %163, i64 9576
  %525 = load ptr, ptr %524, align 8, !tbaa !49
  %526 = getelementptr double, ptr %525, i64 %7
  %527 = getelementptr inbounds nuw i8, ptr %163, i64 9568
  %528 = load ptr, ptr %527, align 32, !tbaa !66
  %529 = getelementptr double, ptr %528, i64 %7
  br label %543

530:                                              ; preds = %549, %349
  %531 = icmp slt i64 %167, 0
  br i1 %531, label %610, label %532

532:                                              ; preds = %530
  %533 = getelementptr inbounds nuw i8, ptr %163, i64 9704
  %534 = load ptr, ptr %533, align 8, !tbaa !61
  %535 = getelementptr double, ptr %534, i64 %7
  %536 = getelementptr inbounds nuw i8, ptr %163, i64 9696
  %537 = load ptr, ptr %536, align 32, !tbaa !50
  %538 = getelementptr double, ptr %537, i64 %7
  %539 = icmp eq i64 %167, 0
  br i1 %539, label %558, label %540

540:                                              ; preds = %532
  %541 = add nuw i64 %167, 1
  %542 = and i64 %541, -2
  br label %583

543:                                              ; preds = %511, %549
  %544 = phi i64 [ 0, %511 ], [ %556, %549 ]
  %545 = icmp slt i64 %544, %512
  br i1 %545, label %546, label %549

546:                                              ; preds = %543
  %547 = load double, ptr %514, align 8, !tbaa !42
  %548 = fmul double %226, %547
  br label %549

549:                                              ; preds = %543, %546
  %550 = phi double [ %548, %546 ], [ %227, %543 ]
  %551 = getelementptr <8 x double>, ptr %517, i64 %544
  store double %550, ptr %551, align 8, !tbaa !42
  %552 = getelementptr <8 x double>, ptr %520, i64 %544
  store double %550, ptr %552, align 8, !tbaa !42
  %553 = getelementptr <8 x double>, ptr %523, i64 %544
  store double %550, ptr %553, align 8, !tbaa !42
  %554 = getelementptr <8 x double>, ptr %526, i64 %544
  store double 1.000000e+00, ptr %554, align 8, !tbaa !42
  %555 = getelementptr <8 x double>, ptr %529, i64 %544
  store double 1.000000e+00, ptr %555, align 8, !tbaa !42
  %556 = add nuw nsw i64 %544, 1
  %557 = icmp eq i64 %556, %166
  br i1 %557, label %530, label %543, !llvm.loop !229

558:                                              ; preds = %597, %532
  %559 = phi i64 [ 0, %532 ], [ %601, %597 ]
  %560 = and i64 %167, 1
  %561 = icmp eq i64 %560, 0
  br i1 %561, label %562, label %570

562:                                              ; preds = %558
  %563 = icmp slt i64 %559, %167
  br i1 %563, label %566, label %564

564:                                              ; preds = %562
  %565 = load double, ptr %369, align 8, !tbaa !42
  br label %566

566:                                              ; preds = %564, %562
  %567 = phi double [ %565, %564 ], [ %364, %562 ]
  %568 = getelementptr <8 x double>, ptr %535, i64 %559
  store double %567, ptr %568, align 8, !tbaa !42
  %569 = getelementptr <8 x double>, ptr %538, i64 %559
  store double %567, ptr %569, align 8, !tbaa !42
  br label %570

570:                                              ; preds = %558, %566
  %571 = icmp eq i64 %167, 0
  br i1 %571, label %610, label %572

572:                                              ; preds = %570
  %573 = getelementptr inbounds nuw i8, ptr %163, i64 9656
  %574 = load ptr, ptr %573, align 8, !tbaa !62
  %575 = getelementptr double, ptr %574, i64 %7
  %576 = getelementptr inbounds nuw i8, ptr %163, i64 9648
  %577 = load ptr, ptr %576, align 16, !tbaa !51
  %578 = getelementptr double, ptr %577, i64 %7
  %579 = and i64 %167, 1
  %580 = icmp eq i64 %167, 1
  br i1 %580, label %604, label %581

581:                                              ; preds = %572
  %582 = and i64 %167, 9223372036854775806
  br label %614

583:                                              ; preds = %597, %540
  %584 = phi i64 [ 0, %540 ], [ %601, %597 ]
  %585 = phi i64 [ 0, %540 ], [ %602, %597 ]
  %586 = icmp slt i64 %584, %167
  br i1 %586, label %589, label %587

587:                                              ; preds = %583
  %588 = load double, ptr %369, align 8, !tbaa !42
  br label %589

589:                                              ; preds = %583, %587
  %590 = phi double [ %588, %587 ], [ %364, %583 ]
  %591 = getelementptr <8 x double>, ptr %535, i64 %584
  store double %590, ptr %591, align 8, !tbaa !42
  %592 = getelementptr <8 x double>, ptr %538, i64 %584
  store double %590, ptr %592, align 8, !tbaa !42
  %593 = or disjoint i64 %584, 1
  %594 = icmp slt i64 %593, %167
  br i1 %594, label %597, label %595

595:                                              ; preds = %589
  %596 = load double, ptr %369, align 8, !tbaa !42
  br label %597

597:                                              ; preds = %595, %589
  %598 = phi double [ %596, %595 ], [ %364, %589 ]
  %599 = getelementptr <8 x double>, ptr %535, i64 %593
  store double %598, ptr %599, align 8, !tbaa !42
  %600 = getelementptr <8 x double>, ptr %538, i64 %593
  store double %598, ptr %600, align 8, !tbaa !42
  %601 = add nuw i64 %584, 2
  %602 = add i64 %585, 2
  %603 = icmp eq i64 %602, %542
  br i1 %603, label %558, label %583, !llvm.loop !230

604:                                              ; preds = %614, %572
  %605 = phi i64 [ 0, %572 ], [ %622, %614 ]
  %606 = icmp eq i64 %579, 0
  br i1 %606, label %610, label %607

607:                                              ; preds = %604
  %608 = getelementptr <8 x double>, ptr %575, i64 %605
  store double %226, ptr %608, align 8, !tbaa !42
  %609 = getelementptr <8 x double>, ptr %578, i64 %605
  store double %226, ptr %609, align 8, !tbaa !42
  br label %610

610:                                              ; preds = %607, %604, %530, %570
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #6
  %611 = add nuw nsw i64 %162, 1
  %612 = load i64, ptr %28, align 8, !tbaa !20
  %613 = icmp slt i64 %611, %612
  br i1 %613, label %161, label %62, !llvm.loop !231

614:                                              ; preds = %614, %581
  %615 = phi i64 [ 0, %581 ], [ %622, %614 ]
  %616 = phi i64 [ 0, %581 ], [ %623, %614 ]
  %617 = getelementptr <8 x double>, ptr %575, i64 %615
  store double %226, ptr %617, align 8, !tbaa !42
  %618 = getelementptr <8 x double>, ptr %578, i64 %615
  store double %226, ptr %618, align 8, !tbaa !42
  %619 = or disjoint i64 %615, 1
  %620 = getelementptr <8 x double>, ptr %575, i64 %619
  store double %226, ptr %620, align 8, !tbaa !42
  %621 = getelementptr <8 x double>, ptr %578, i64 %619
  store double %226, ptr %621, align 8, !tbaa !42
  %622 = add nuw nsw i64 %615, 2
  %623 = add i64 %616, 2
  %624 = icmp eq i64 %623, %582
  br i1 %624, label %604, label %614, !llvm.loop !232
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6288) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 15) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !233
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !234
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !42
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !235
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !42
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !42
  %31 = fsub double %27, %30
  %32 = icmp sgt i64 %24, %20
  br i1 %32, label %33, label %69

33:                                               ; preds = %3
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %35 = getelementptr inbounds double, ptr %34, i64 %10
  br label %36

36:                                               ; preds = %33, %66
  %37 = phi i64 [ %20, %33 ], [ %67, %66 ]
  %38 = mul nsw i64 %37, 48
  %39 = getelementptr inbounds i8, ptr %16, i64 %38
  %40 = load double, ptr %39, align 8, !tbaa !42
  %41 = getelementptr inbounds nuw i8, ptr %39, i64 40
  %42 = load double, ptr %41, align 8, !tbaa !42
  %43 = fcmp ult double %42, 0.000000e+00
  br i1 %43, label %49, label %44

44:                                               ; preds = %36
  %45 = load double, ptr %35, align 8, !tbaa !42
  %46 = fsub double %42, %45
  %47 = fcmp ogt double %46, 0x3EB0C6F7A0B5ED8D
  %48 = select i1 %47, double %46, double 0.000000e+00
  br label %49

49:                                               ; preds = %44, %36
  %50 = phi double [ %48, %44 ], [ %40, %36 ]
  %51 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %52 = load double, ptr %51, align 8, !tbaa !42
  %53 = fcmp oeq double %52, 2.000000e+00
  br i1 %53, label %54, label %62

54:                                               ; preds = %49
  %55 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %56 = load double, ptr %55, align 8, !tbaa !42
  %57 = fcmp oeq double %56, 4.000000e+00
  br i1 %57, label %58, label %62

58:                                               ; preds = %54
  %59 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %60 = load double, ptr %59, align 8, !tbaa !42
  %61 = fcmp ole double %31, %60
  br label %62

62:                                               ; preds = %58, %54, %49
  %63 = phi i1 [ false, %54 ], [ false, %49 ], [ %61, %58 ]
  %64 = fcmp oeq double %50, 0.000000e+00
  %65 = select i1 %64, i1 true, i1 %63
  br i1 %65, label %66, label %79

66:                                               ; preds = %62
  %67 = add i64 %37, 1
  %68 = icmp eq i64 %67, %24
  br i1 %68, label %69, label %36, !llvm.loop !236

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !42
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !42
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !42
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6208
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !42
  br label %284

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !42
  %82 = load double, ptr %35, align 8, !tbaa !42
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !42
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4416
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !42
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !42
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !42
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !42
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !42
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !42
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !42
  %99 = load double, ptr %80, align 8, !tbaa !42
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !42
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %215

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %152

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  %112 = load ptr, ptr %111, align 8, !tbaa !28
  %113 = and i64 %108, 1
  %114 = icmp eq i64 %108, 1
  br i1 %114, label %139, label %115

115:                                              ; preds = %110
  %116 = and i64 %108, 9223372036854775806
  br label %117

117:                                              ; preds = %117, %115
  %118 = phi <8 x double> [ zeroinitializer, %115 ], [ %135, %117 ]
  %119 = phi i64 [ 0, %115 ], [ %136, %117 ]
  %120 = phi i64 [ 0, %115 ], [ %137, %117 ]
  %121 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %119
  %122 = getelementptr inbounds nuw i8, ptr %121, i64 128
  %123 = load <8 x double>, ptr %122, align 64, !tbaa !26
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 4544
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fmul <8 x double> %123, %125
  %127 = fadd <8 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 128
  %131 = load <8 x double>, ptr %130, align 64, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 4544
  %133 = load <8 x double>, ptr %132, align 64, !tbaa !26
  %134 = fmul <8 x double> %131, %133
  %135 = fadd <8 x double> %127, %134
  %136 = add nuw nsw i64 %119, 2
  %137 = add i64 %120, 2
  %138 = icmp eq i64 %137, %116
  br i1 %138, label %139, label %117, !llvm.loop !237

139:                                              ; preds = %117, %110
  %140 = phi <8 x double> [ poison, %110 ], [ %135, %117 ]
  %141 = phi <8 x double> [ zeroinitializer, %110 ], [ %135, %117 ]
  %142 = phi i64 [ 0, %110 ], [ %136, %117 ]
  %143 = icmp eq i64 %113, 0
  br i1 %143, label %152, label %144

144:                                              ; preds = %139
  %145 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %142
  %146 = getelementptr inbounds nuw i8, ptr %145, i64 128
  %147 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 4544
  %149 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %150 = fmul <8 x double> %147, %149
  %151 = fadd <8 x double> %141, %150
  br label %152

152:                                              ; preds = %144, %139, %106
  %153 = phi <8 x double> [ zeroinitializer, %106 ], [ %140, %139 ], [ %151, %144 ]
  %154 = extractelement <8 x double> %153, i64 0
  %155 = extractelement <8 x double> %153, i64 1
  %156 = fadd double %154, %155
  %157 = extractelement <8 x double> %153, i64 2
  %158 = fadd double %157, %156
  %159 = extractelement <8 x double> %153, i64 3
  %160 = fadd double %159, %158
  %161 = extractelement <8 x double> %153, i64 4
  %162 = fadd double %161, %160
  %163 = extractelement <8 x double> %153, i64 5
  %164 = fadd double %163, %162
  %165 = extractelement <8 x double> %153, i64 6
  %166 = fadd double %165, %164
  %167 = extractelement <8 x double> %153, i64 7
  %168 = fadd double %167, %166
  %169 = fmul double %168, 4.615260e+02
  %170 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %171 = getelementptr inbounds double, ptr %170, i64 %10
  %172 = load double, ptr %171, align 8, !tbaa !42
  %173 = fmul double %172, %169
  %174 = fdiv double %173, %30
  %175 = fcmp ogt double %174, 0.000000e+00
  %176 = fneg double %174
  %177 = select i1 %175, double %176, double -0.000000e+00
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %179 = getelementptr inbounds double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !42
  %181 = fdiv double %177, %180
  %182 = insertelement <8 x double> poison, double %181, i64 0
  %183 = shufflevector <8 x double> %182, <8 x double> poison, <8 x i32> zeroinitializer
  %184 = fcmp ogt <8 x double> %183, splat (double -7.000000e+02)
  %185 = select <8 x i1> %184, <8 x double> %183, <8 x double> splat (double -7.000000e+02)
  %186 = fcmp olt <8 x double> %185, splat (double 7.000000e+02)
  %187 = select <8 x i1> %186, <8 x double> %185, <8 x double> splat (double 7.000000e+02)
  %188 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %187, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %189 = fadd <8 x double> %188, splat (double 0xC338000000000000)
  %190 = fneg <8 x double> %189
  %191 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %190, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %187)
  %192 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %190, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %191)
  %193 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %192, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %194 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %193, <8 x double> %192, <8 x double> splat (double 0x3E5AE64567F544E4))
  %195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %194, <8 x double> %192, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %196 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %195, <8 x double> %192, <8 x double> splat (double 0x3EC71DE3A556C734))
  %197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %196, <8 x double> %192, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %198 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %197, <8 x double> %192, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %199 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %198, <8 x double> %192, <8 x double> splat (double 0x3F56C16C16C16C17))
  %200 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %199, <8 x double> %192, <8 x double> splat (double 0x3F81111111111111))
  %201 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %200, <8 x double> %192, <8 x double> splat (double 0x3FA5555555555555))
  %202 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %201, <8 x double> %192, <8 x double> splat (double 0x3FC5555555555555))
  %203 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %202, <8 x double> %192, <8 x double> splat (double 5.000000e-01))
  %204 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %203, <8 x double> %192, <8 x double> splat (double 1.000000e+00))
  %205 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %204, <8 x double> %192, <8 x double> splat (double 1.000000e+00))
  %206 = bitcast <8 x double> %188 to <8 x i64>
  %207 = shl <8 x i64> %206, splat (i64 52)
  %208 = bitcast <8 x double> %205 to <8 x i64>
  %209 = add <8 x i64> %207, %208
  %210 = bitcast <8 x i64> %209 to <8 x double>
  %211 = extractelement <8 x double> %210, i64 0
  %212 = fmul double %30, %211
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %214 = getelementptr inbounds double, ptr %213, i64 %10
  store double %212, ptr %214, align 8, !tbaa !42
  br label %215

215:                                              ; preds = %79, %152
  %216 = fcmp une double %99, %103
  br i1 %216, label %217, label %256

217:                                              ; preds = %215
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %219 = getelementptr inbounds double, ptr %218, i64 %10
  store double %99, ptr %219, align 8, !tbaa !42
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %221 = getelementptr inbounds double, ptr %220, i64 %10
  store double %82, ptr %221, align 8, !tbaa !42
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %223 = getelementptr inbounds double, ptr %222, i64 %10
  %224 = load double, ptr %223, align 8, !tbaa !42
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %226 = getelementptr inbounds double, ptr %225, i64 %10
  store double %224, ptr %226, align 8, !tbaa !42
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %228 = getelementptr inbounds i64, ptr %227, i64 %10
  store i64 -1, ptr %228, align 8, !tbaa !30
  %229 = fcmp oeq double %99, 0.000000e+00
  %230 = fcmp oeq double %99, 3.000000e+00
  %231 = or i1 %229, %230
  br i1 %231, label %232, label %240

232:                                              ; preds = %217
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %234 = getelementptr inbounds double, ptr %233, i64 %10
  store double %30, ptr %234, align 8, !tbaa !42
  store double %30, ptr %26, align 8, !tbaa !42
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %236 = getelementptr inbounds double, ptr %235, i64 %10
  %237 = load double, ptr %236, align 8, !tbaa !42
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %239 = getelementptr inbounds double, ptr %238, i64 %10
  store double %237, ptr %239, align 8, !tbaa !42
  br label %240

240:                                              ; preds = %217, %232
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %242 = load i64, ptr %241, align 8, !tbaa !20
  %243 = icmp sgt i64 %242, 0
  br i1 %243, label %244, label %256

244:                                              ; preds = %240
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 6280
  %246 = load ptr, ptr %245, align 8, !tbaa !28
  %247 = getelementptr i64, ptr %246, i64 %10
  %248 = sext i1 %230 to i64
  br label %249

249:                                              ; preds = %244, %249
  %250 = phi i64 [ 0, %244 ], [ %253, %249 ]
  %251 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 49
  store i64 -1, ptr %251, align 8, !tbaa !30
  %252 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 50
  store i64 %248, ptr %252, align 8, !tbaa !30
  %253 = add nuw nsw i64 %250, 1
  %254 = load i64, ptr %241, align 8, !tbaa !20
  %255 = icmp slt i64 %253, %254
  br i1 %255, label %249, label %256, !llvm.loop !238

256:                                              ; preds = %249, %240, %215
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #6
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %257 = getelementptr inbounds i64, ptr %4, i64 %10
  store i64 -1, ptr %257, align 8, !tbaa !30
  %258 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %259 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %260 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %261 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %262 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %263 = fmul <8 x double> %262, splat (double 5.000000e-01)
  %264 = load <8 x double>, ptr %89, align 64, !tbaa !26
  %265 = fadd <8 x double> %264, %263
  %266 = fadd <8 x double> %265, splat (double -4.000000e-03)
  %267 = fcmp ult <8 x double> %260, %266
  %268 = fsub <8 x double> %264, %263
  %269 = fadd <8 x double> %268, splat (double 4.000000e-03)
  %270 = fcmp ole <8 x double> %260, %269
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %272 = load <8 x i64>, ptr %271, align 64, !tbaa !26
  %273 = select <8 x i1> %270, <8 x i64> splat (i64 -1), <8 x i64> %272
  %274 = select <8 x i1> %267, <8 x i64> %273, <8 x i64> zeroinitializer
  %275 = xor <8 x i64> %274, %272
  %276 = and <8 x i64> %275, %258
  %277 = and <8 x i64> %274, %258
  %278 = xor <8 x i64> %258, splat (i64 -1)
  %279 = and <8 x i64> %272, %278
  %280 = or <8 x i64> %277, %279
  store <8 x i64> %280, ptr %271, align 64, !tbaa !26
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %282 = load <8 x i64>, ptr %281, align 64, !tbaa !26
  %283 = or <8 x i64> %276, %282
  store <8 x i64> %283, ptr %281, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #6
  br label %284

284:                                              ; preds = %256, %69
  ret void
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fmuladd.v8f64(<8 x double>, <8 x double>, <8 x double>) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.vector.reduce.or.v8i64(<8 x i64>) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.vector.reduce.fmin.v8f64(<8 x double>) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fabs.v8f64(<8 x double>) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.sqrt.v8f64(<8 x double>) #3

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.vector.reduce.fmax.v8f64(<8 x double>) #3

; Function Attrs: nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.smin.i64(i64, i64) #4

attributes #0 = { nounwind }
attributes #1 = { nounwind }
attributes #2 = { nounwind }
attributes #3 = { nounwind }
attributes #4 = { nounwind }
attributes #5 = { nounwind }
attributes #6 = { nounwind }

!4 = !{!5, !6, i64 16}
!5 = !{!"_ZTS3Job", !6, i64 0, !6, i64 8, !6, i64 16, !6, i64 24, !6, i64 32, !6, i64 40, !6, i64 48, !6, i64 56, !9, i64 64, !10, i64 72, !10, i64 80, !10, i64 88, !10, i64 96, !12, i64 104, !12, i64 112, !12, i64 120, !12, i64 128, !12, i64 136, !10, i64 144, !12, i64 152, !12, i64 160, !10, i64 168, !12, i64 176, !6, i64 184, !6, i64 192, !10, i64 200, !10, i64 208, !10, i64 216}
!6 = !{!"long long", !7, i64 0}
!7 = !{!"omnipotent char", !8, i64 0}
!8 = !{!"Simple C++ TBAA"}
!9 = !{!"double", !7, i64 0}
!10 = !{!"p1 double", !11, i64 0}
!11 = !{!"any pointer", !7, i64 0}
!12 = !{!"p1 long long", !11, i64 0}
!13 = !{!5, !6, i64 24}
!14 = !{!5, !6, i64 48}
!15 = !{!5, !6, i64 8}
!16 = !{!17, !6, i64 2368}
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2368, !6, i64 2376, !6, i64 2384, !6, i64 2392, !6, i64 2400, !6, i64 2408, !7, i64 2432, !7, i64 2496, !7, i64 2880, !7, i64 3264, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6144, !7, i64 6208, !11, i64 6272, !19, i64 6280}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 2376}
!21 = !{!17, !6, i64 2384}
!22 = !{!17, !6, i64 2392}
!23 = !{!5, !6, i64 32}
!24 = !{!17, !6, i64 2400}
!25 = !{!5, !9, i64 64}
!26 = !{!7, !7, i64 0}
!27 = !{!17, !6, i64 2408}
!28 = !{!17, !19, i64 6280}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 9472}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 3328, !7, i64 4224, !7, i64 5120, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !34, i64 7168, !7, i64 7360, !7, i64 7424, !7, i64 7488, !7, i64 7552, !7, i64 7616, !7, i64 7680, !7, i64 7744, !7, i64 7808, !7, i64 7872, !7, i64 7936, !7, i64 8000, !7, i64 8064, !7, i64 8128, !7, i64 8192, !7, i64 8256, !7, i64 8320, !7, i64 8384, !7, i64 8448, !7, i64 8512, !7, i64 8576, !7, i64 8640, !7, i64 8704, !7, i64 8768, !35, i64 8832, !7, i64 9216, !7, i64 9280, !7, i64 9344, !7, i64 9408, !6, i64 9472, !7, i64 9480, !11, i64 9544, !11, i64 9552, !11, i64 9560, !11, i64 9568, !11, i64 9576, !11, i64 9584, !11, i64 9592, !11, i64 9600, !11, i64 9608, !11, i64 9616, !11, i64 9624, !11, i64 9632, !11, i64 9640, !11, i64 9648, !11, i64 9656, !11, i64 9664, !11, i64 9672, !11, i64 9680, !11, i64 9688, !11, i64 9696, !11, i64 9704}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880, !7, i64 2944, !7, i64 3008, !7, i64 3072, !7, i64 3136, !7, i64 3200, !7, i64 3264}
!34 = !{!"_ZTS5Joint", !7, i64 0, !7, i64 64, !7, i64 128}
!35 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320}
!36 = !{!11, !11, i64 0}
!37 = !{!32, !11, i64 9632}
!38 = !{!17, !11, i64 6272}
!39 = !{!5, !6, i64 0}
!40 = !{!5, !6, i64 184}
!41 = !{!5, !6, i64 192}
!42 = !{!9, !9, i64 0}
!43 = !{!5, !10, i64 216}
!44 = !{!5, !6, i64 40}
!45 = !{!5, !10, i64 200}
!46 = !{!5, !10, i64 208}
!47 = !{!32, !11, i64 9552}
!48 = !{!32, !11, i64 9616}
!49 = !{!32, !11, i64 9576}
!50 = !{!32, !11, i64 9696}
!51 = !{!32, !11, i64 9648}
!52 = !{!53}
!53 = distinct !{!53, !54, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!54 = distinct !{!54, !"_ZL4nearRK10PieceGivenDv8_d"}
!55 = distinct !{!55, !56}
!56 = !{!"llvm.loop.mustprogress"}
!57 = distinct !{!57, !56}
!58 = distinct !{!58, !56}
!59 = distinct !{!59, !56}
!60 = distinct !{!60, !56}
!61 = !{!32, !11, i64 9704}
!62 = !{!32, !11, i64 9656}
!63 = !{!32, !11, i64 9664}
!64 = distinct !{!64, !56}
!65 = !{!32, !11, i64 9560}
!66 = !{!32, !11, i64 9568}
!67 = distinct !{!67, !56}
!68 = distinct !{!68, !56}
!69 = distinct !{!69, !56}
!70 = !{!71}
!71 = distinct !{!71, !72, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!72 = distinct !{!72, !"_ZL4stirRK5GroupRK5Piece"}
!73 = !{!74}
!74 = distinct !{!74, !75, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!75 = distinct !{!75, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!76 = !{!32, !11, i64 9608}
!77 = distinct !{!77, !56}
!78 = distinct !{!78, !56}
!79 = distinct !{!79, !56}
!80 = distinct !{!80, !56}
!81 = distinct !{!81, !56}
!82 = distinct !{!82, !56}
!83 = !{!84}
!84 = distinct !{!84, !85, !"_ZL7past_ofRK5Pieceb: argument 0"}
!85 = distinct !{!85, !"_ZL7past_ofRK5Pieceb"}
!86 = !{!32, !11, i64 9544}
!87 = !{!32, !11, i64 9600}
!88 = !{!32, !11, i64 9584}
!89 = !{!32, !11, i64 9592}
!90 = !{!91, !93}
!91 = distinct !{!91, !92, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!92 = distinct !{!92, !"_ZL4nearRK10PieceGivenDv8_d"}
!93 = distinct !{!93, !94, !"_ZL9join_boneRK5PieceDv8_dS2_S2_: argument 0"}
!94 = distinct !{!94, !"_ZL9join_boneRK5PieceDv8_dS2_S2_"}
!95 = !{!93}
!96 = !{!97}
!97 = distinct !{!97, !98, !"_ZN11EliminationILb1EE4faceExDv8_dS1_: argument 0"}
!98 = distinct !{!98, !"_ZN11EliminationILb1EE4faceExDv8_dS1_"}
!99 = distinct !{!99, !56}
!100 = !{!101}
!101 = distinct !{!101, !102, !"_ZL7past_ofRK5Pieceb: argument 0"}
!102 = distinct !{!102, !"_ZL7past_ofRK5Pieceb"}
!103 = !{!104}
!104 = distinct !{!104, !105, !"_ZL7past_ofRK5Pieceb: argument 0"}
!105 = distinct !{!105, !"_ZL7past_ofRK5Pieceb"}
!106 = !{!107}
!107 = distinct !{!107, !108, !"_ZN11EliminationILb0EE4faceExDv8_dS1_: argument 0"}
!108 = distinct !{!108, !"_ZN11EliminationILb0EE4faceExDv8_dS1_"}
!109 = !{!110}
!110 = distinct !{!110, !111, !"_ZN11EliminationILb0EE4faceExDv8_dS1_: argument 0"}
!111 = distinct !{!111, !"_ZN11EliminationILb0EE4faceExDv8_dS1_"}
!112 = distinct !{!112, !56}
!113 = !{!114}
!114 = distinct !{!114, !115, !"_ZL7past_ofRK5Pieceb: argument 0"}
!115 = distinct !{!115, !"_ZL7past_ofRK5Pieceb"}
!116 = !{!117}
!117 = distinct !{!117, !118, !"_ZN11EliminationILb0EE4faceExDv8_dS1_: argument 0"}
!118 = distinct !{!118, !"_ZN11EliminationILb0EE4faceExDv8_dS1_"}
!119 = distinct !{!119, !56}
!120 = distinct !{!120, !56}
!121 = !{!122}
!122 = distinct !{!122, !123, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!123 = distinct !{!123, !"_ZL4stirRK5GroupRK5Piece"}
!124 = !{!125}
!125 = distinct !{!125, !126, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!126 = distinct !{!126, !"_ZL4nearRK10PieceGivenDv8_d"}
!127 = distinct !{!127, !56}
!128 = !{!32, !11, i64 9688}
!129 = distinct !{!129, !56}
!130 = !{!32, !11, i64 9672}
!131 = !{!32, !11, i64 9680}
!132 = distinct !{!132, !56}
!133 = distinct !{!133, !56}
!134 = distinct !{!134, !56}
!135 = distinct !{!135, !56}
!136 = !{!137}
!137 = distinct !{!137, !138, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!138 = distinct !{!138, !"_ZL8condenseR5GroupDv8_d"}
!139 = !{!140}
!140 = distinct !{!140, !141, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!141 = distinct !{!141, !"_ZL9evaporateR5GroupDv8_d"}
!142 = !{!143}
!143 = distinct !{!143, !144, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!144 = distinct !{!144, !"_ZL7outflowRK5GroupDv8_dS2_"}
!145 = !{!146, !140}
!146 = distinct !{!146, !147, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!147 = distinct !{!147, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!148 = !{!149, !146, !140}
!149 = distinct !{!149, !150, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x: argument 0"}
!150 = distinct !{!150, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x"}
!151 = !{!152, !149, !146, !140}
!152 = distinct !{!152, !153, !"_ZL7past_ofRK5Pieceb: argument 0"}
!153 = distinct !{!153, !"_ZL7past_ofRK5Pieceb"}
!154 = distinct !{!154, !56}
!155 = distinct !{!155, !56}
!156 = distinct !{!156, !56}
!157 = !{!158}
!158 = distinct !{!158, !159, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!159 = distinct !{!159, !"_ZL9evaporateR5GroupDv8_d"}
!160 = !{!161, !158}
!161 = distinct !{!161, !162, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!162 = distinct !{!162, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!163 = !{!164, !161, !158}
!164 = distinct !{!164, !165, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x: argument 0"}
!165 = distinct !{!165, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x"}
!166 = !{!167, !164, !161, !158}
!167 = distinct !{!167, !168, !"_ZL7past_ofRK5Pieceb: argument 0"}
!168 = distinct !{!168, !"_ZL7past_ofRK5Pieceb"}
!169 = distinct !{!169, !56}
!170 = distinct !{!170, !56}
!171 = !{!32, !11, i64 9640}
!172 = distinct !{!172, !56}
!173 = distinct !{!173, !56}
!174 = distinct !{!174, !56}
!175 = !{!176}
!176 = distinct !{!176, !177, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!177 = distinct !{!177, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!178 = distinct !{!178, !56}
!179 = distinct !{!179, !56}
!180 = distinct !{!180, !56}
!181 = distinct !{!181, !56}
!182 = !{!183}
!183 = distinct !{!183, !184, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!184 = distinct !{!184, !"_ZL4nearRK10PieceGivenDv8_d"}
!185 = !{!186}
!186 = distinct !{!186, !187, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!187 = distinct !{!187, !"_ZL4nearRK10PieceGivenDv8_d"}
!188 = distinct !{!188, !56}
!189 = !{!32, !11, i64 9624}
!190 = distinct !{!190, !56}
!191 = distinct !{!191, !56}
!192 = distinct !{!192, !56}
!193 = distinct !{!193, !56}
!194 = distinct !{!194, !56}
!195 = distinct !{!195, !56}
!196 = distinct !{!196, !56}
!197 = distinct !{!197, !56}
!198 = distinct !{!198, !56}
!199 = distinct !{!199, !56}
!200 = distinct !{!200, !56}
!201 = distinct !{!201, !56}
!202 = !{!203}
!203 = distinct !{!203, !204, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!204 = distinct !{!204, !"_ZL4nearRK10PieceGivenDv8_d"}
!205 = distinct !{!205, !56}
!206 = !{!5, !6, i64 56}
!207 = !{!10, !10, i64 0}
!208 = !{!5, !12, i64 176}
!209 = !{!5, !10, i64 168}
!210 = distinct !{!210, !56}
!211 = distinct !{!211, !212}
!212 = !{!"llvm.loop.unroll.disable"}
!213 = distinct !{!213, !56}
!214 = !{!5, !12, i64 160}
!215 = !{!216}
!216 = distinct !{!216, !217, !"_ZL4nearRK10PieceGivenDv8_d: argument 0"}
!217 = distinct !{!217, !"_ZL4nearRK10PieceGivenDv8_d"}
!218 = distinct !{!218, !212}
!219 = !{!5, !10, i64 80}
!220 = !{!5, !12, i64 104}
!221 = distinct !{!221, !56}
!222 = !{!5, !10, i64 72}
!223 = distinct !{!223, !56}
!224 = !{!5, !10, i64 96}
!225 = distinct !{!225, !56}
!226 = distinct !{!226, !212}
!227 = distinct !{!227, !56}
!228 = distinct !{!228, !56}
!229 = distinct !{!229, !56}
!230 = distinct !{!230, !56}
!231 = distinct !{!231, !56}
!232 = distinct !{!232, !56}
!233 = !{!5, !10, i64 88}
!234 = !{!5, !12, i64 112}
!235 = !{!5, !12, i64 120}
!236 = distinct !{!236, !56}
!237 = distinct !{!237, !56}
!238 = distinct !{!238, !56}
