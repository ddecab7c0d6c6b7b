; Made by scripts/lanes.py from sources of sha256 2b7a2d1c8a13c02c42b49640e11f2cf211e83ac4354f9371aba8ea3fe2cec461.
%struct.Piece = type <{ %struct.PieceGiven, [12 x <8 x double>], [12 x <8 x double>], [12 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define range(i64 15936, 15873) i64 @work_space_one(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %3 = load i64, ptr %2, align 8, !tbaa !4
  %4 = mul i64 %3, 18
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %6 = load i64, ptr %5, align 8, !tbaa !13
  %7 = mul i64 %6, 9
  %8 = add i64 %7, %4
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %10 = load i64, ptr %9, align 8, !tbaa !14
  %11 = add i64 %8, %10
  %12 = shl i64 %11, 6
  %13 = add i64 %12, 15936
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
  %12 = alloca <8 x i64>, align 64
  %13 = icmp eq i64 %2, 0
  br i1 %13, label %109, label %14

14:                                               ; preds = %3
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %16 = load i64, ptr %15, align 8, !tbaa !15
  %17 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  store i64 %16, ptr %17, align 64, !tbaa !16
  %18 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  store i64 1, ptr %18, align 8, !tbaa !20
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %20 = load i64, ptr %19, align 8, !tbaa !4
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  store i64 %20, ptr %21, align 16, !tbaa !21
  %22 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %23 = load i64, ptr %22, align 8, !tbaa !13
  %24 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  store i64 %23, ptr %24, align 8, !tbaa !22
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %26 = load i64, ptr %25, align 8, !tbaa !23
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  store i64 %26, ptr %27, align 32, !tbaa !24
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %29 = load double, ptr %28, align 8, !tbaa !25
  %30 = insertelement <8 x double> poison, double %29, i64 0
  %31 = shufflevector <8 x double> %30, <8 x double> poison, <8 x i32> zeroinitializer
  %32 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store <8 x double> %31, ptr %32, align 64, !tbaa !26
  %33 = getelementptr inbounds nuw i8, ptr %1, i64 2344
  store i64 0, ptr %33, align 8, !tbaa !27
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 6016
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 5960
  store ptr %34, ptr %35, align 8, !tbaa !28
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 13824
  %37 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %38 = add nsw i64 %20, 1
  %39 = getelementptr inbounds <8 x double>, ptr %36, i64 %20
  %40 = getelementptr inbounds <8 x double>, ptr %39, i64 %20
  %41 = getelementptr inbounds <8 x double>, ptr %40, i64 %20
  %42 = getelementptr inbounds <8 x double>, ptr %41, i64 %20
  %43 = getelementptr inbounds <8 x double>, ptr %42, i64 %20
  %44 = getelementptr inbounds <8 x double>, ptr %43, i64 %20
  %45 = getelementptr inbounds <8 x double>, ptr %44, i64 %20
  %46 = getelementptr inbounds <8 x double>, ptr %45, i64 %20
  %47 = getelementptr inbounds <8 x double>, ptr %46, i64 %20
  %48 = getelementptr inbounds <8 x double>, ptr %47, i64 %20
  %49 = getelementptr inbounds <8 x double>, ptr %48, i64 %20
  %50 = getelementptr inbounds <8 x double>, ptr %49, i64 %20
  %51 = getelementptr inbounds <8 x double>, ptr %50, i64 %20
  %52 = getelementptr inbounds <8 x double>, ptr %51, i64 %20
  %53 = load ptr, ptr %37, align 8, !tbaa !29
  %54 = load i64, ptr %53, align 8, !tbaa !30
  %55 = getelementptr inbounds nuw i8, ptr %1, i64 13568
  store i64 %54, ptr %55, align 64, !tbaa !31
  %56 = getelementptr inbounds nuw i8, ptr %1, i64 13576
  %57 = getelementptr inbounds nuw i8, ptr %1, i64 13584
  %58 = getelementptr inbounds nuw i8, ptr %1, i64 13592
  %59 = getelementptr inbounds nuw i8, ptr %1, i64 13600
  %60 = getelementptr inbounds nuw i8, ptr %1, i64 13608
  %61 = getelementptr inbounds nuw i8, ptr %1, i64 13616
  %62 = getelementptr inbounds nuw i8, ptr %1, i64 13624
  %63 = getelementptr inbounds nuw i8, ptr %1, i64 13632
  %64 = getelementptr inbounds nuw i8, ptr %1, i64 13640
  %65 = getelementptr inbounds nuw i8, ptr %1, i64 13648
  %66 = getelementptr inbounds nuw i8, ptr %1, i64 13656
  %67 = getelementptr inbounds nuw i8, ptr %1, i64 13664
  %68 = getelementptr inbounds nuw i8, ptr %1, i64 13672
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 13680
  store ptr %36, ptr %56, align 8, !tbaa !34
  store ptr %39, ptr %57, align 8, !tbaa !34
  store ptr %40, ptr %58, align 8, !tbaa !34
  store ptr %41, ptr %59, align 8, !tbaa !34
  store ptr %42, ptr %60, align 8, !tbaa !34
  store ptr %43, ptr %61, align 8, !tbaa !34
  store ptr %44, ptr %62, align 8, !tbaa !34
  store ptr %45, ptr %63, align 8, !tbaa !34
  store ptr %46, ptr %64, align 8, !tbaa !34
  store ptr %47, ptr %65, align 8, !tbaa !34
  store ptr %48, ptr %66, align 8, !tbaa !34
  store ptr %49, ptr %67, align 8, !tbaa !34
  store ptr %50, ptr %68, align 8, !tbaa !34
  store ptr %51, ptr %69, align 8, !tbaa !34
  %70 = getelementptr inbounds nuw i8, ptr %1, i64 13688
  store ptr %52, ptr %70, align 8, !tbaa !35
  %71 = icmp eq i64 %54, 0
  %72 = select i1 %71, i64 0, i64 2
  %73 = shl i64 %38, %72
  %74 = getelementptr inbounds <8 x double>, ptr %52, i64 %73
  %75 = getelementptr inbounds nuw i8, ptr %1, i64 13696
  %76 = getelementptr inbounds nuw i8, ptr %1, i64 13704
  %77 = getelementptr inbounds nuw i8, ptr %1, i64 13712
  %78 = getelementptr inbounds nuw i8, ptr %1, i64 13720
  %79 = getelementptr inbounds nuw i8, ptr %1, i64 13728
  %80 = getelementptr inbounds nuw i8, ptr %1, i64 13736
  %81 = getelementptr inbounds nuw i8, ptr %1, i64 13744
  %82 = getelementptr inbounds nuw i8, ptr %1, i64 13752
  %83 = getelementptr inbounds nuw i8, ptr %1, i64 13760
  store ptr %74, ptr %75, align 8, !tbaa !34
  %84 = getelementptr <8 x double>, ptr %74, i64 %23
  %85 = getelementptr i8, ptr %84, i64 64
  store ptr %85, ptr %76, align 8, !tbaa !34
  %86 = getelementptr <8 x double>, ptr %85, i64 %23
  %87 = getelementptr i8, ptr %86, i64 64
  store ptr %87, ptr %77, align 8, !tbaa !34
  %88 = getelementptr <8 x double>, ptr %87, i64 %23
  %89 = getelementptr i8, ptr %88, i64 64
  store ptr %89, ptr %78, align 8, !tbaa !34
  %90 = getelementptr <8 x double>, ptr %89, i64 %23
  %91 = getelementptr i8, ptr %90, i64 64
  store ptr %91, ptr %79, align 8, !tbaa !34
  %92 = getelementptr <8 x double>, ptr %91, i64 %23
  %93 = getelementptr i8, ptr %92, i64 64
  store ptr %93, ptr %80, align 8, !tbaa !34
  %94 = getelementptr <8 x double>, ptr %93, i64 %23
  %95 = getelementptr i8, ptr %94, i64 64
  store ptr %95, ptr %81, align 8, !tbaa !34
  %96 = getelementptr <8 x double>, ptr %95, i64 %23
  %97 = getelementptr i8, ptr %96, i64 64
  store ptr %97, ptr %82, align 8, !tbaa !34
  %98 = getelementptr <8 x double>, ptr %97, i64 %23
  %99 = getelementptr i8, ptr %98, i64 64
  store ptr %99, ptr %83, align 8, !tbaa !34
  %100 = getelementptr <8 x double>, ptr %99, i64 %23
  %101 = getelementptr i8, ptr %100, i64 64
  %102 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  store ptr %101, ptr %102, align 64, !tbaa !36
  %103 = load i64, ptr %0, align 8, !tbaa !37
  %104 = icmp sgt i64 %103, 0
  br i1 %104, label %105, label %106

105:                                              ; preds = %14
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %109

106:                                              ; preds = %14
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %108 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  store i64 0, ptr %108, align 8, !tbaa !30
  store i64 0, ptr %107, align 8, !tbaa !30
  br label %109

109:                                              ; preds = %106, %105, %3
  %110 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %113 = load i64, ptr %111, align 8, !tbaa !38
  %114 = load i64, ptr %112, align 8, !tbaa !39
  %115 = sub nsw i64 %113, %114
  %116 = icmp slt i64 %115, 16
  br i1 %116, label %4878, label %117

117:                                              ; preds = %109
  %118 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  %121 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %124 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %125 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %126 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %127 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %128 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %129 = getelementptr inbounds nuw i8, ptr %1, i64 5960
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 2344
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %162 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %164 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %165 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %215 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %217 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %219 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 5320
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 5384
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 5328
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 5392
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 5336
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 5400
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 5344
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 5408
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 5352
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 5416
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 5360
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 5424
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5368
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 5432
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 5896
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 5904
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 5912
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 5920
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 5928
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 5936
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 5944
  br label %273

273:                                              ; preds = %117, %512
  %274 = load i64, ptr %110, align 8, !tbaa !30
  %275 = icmp eq i64 %274, 0
  br i1 %275, label %517, label %276

276:                                              ; preds = %273
  %277 = load double, ptr %118, align 8, !tbaa !40
  %278 = fcmp oeq double %277, 0.000000e+00
  br i1 %278, label %517, label %279

279:                                              ; preds = %276
  %280 = load i64, ptr %119, align 16, !tbaa !21
  %281 = load i64, ptr %120, align 8, !tbaa !22
  %282 = load i64, ptr %121, align 8, !tbaa !30
  %283 = load ptr, ptr %122, align 8, !tbaa !41
  %284 = mul nsw i64 %282, 40
  %285 = getelementptr inbounds i8, ptr %283, i64 %284
  %286 = load double, ptr %123, align 8, !tbaa !40
  store double %286, ptr %285, align 8, !tbaa !40
  %287 = load double, ptr %124, align 8, !tbaa !40
  %288 = getelementptr inbounds nuw i8, ptr %285, i64 8
  store double %287, ptr %288, align 8, !tbaa !40
  %289 = load double, ptr %125, align 8, !tbaa !40
  %290 = getelementptr inbounds nuw i8, ptr %285, i64 16
  store double %289, ptr %290, align 8, !tbaa !40
  %291 = load double, ptr %126, align 8, !tbaa !40
  %292 = getelementptr inbounds nuw i8, ptr %285, i64 24
  store double %291, ptr %292, align 8, !tbaa !40
  %293 = load double, ptr %127, align 8, !tbaa !40
  %294 = getelementptr inbounds nuw i8, ptr %285, i64 32
  store double %293, ptr %294, align 8, !tbaa !40
  %295 = load i64, ptr %128, align 64, !tbaa !16
  %296 = icmp sgt i64 %295, 0
  br i1 %296, label %297, label %501

297:                                              ; preds = %279
  %298 = load ptr, ptr %129, align 8, !tbaa !28
  %299 = getelementptr inbounds nuw i8, ptr %298, i64 1536
  %300 = getelementptr inbounds nuw i8, ptr %298, i64 4352
  %301 = load ptr, ptr %130, align 8, !tbaa !42
  %302 = mul nsw i64 %295, %282
  %303 = mul i64 %280, 3
  %304 = load ptr, ptr %131, align 8, !tbaa !43
  %305 = icmp sgt i64 %280, 0
  %306 = getelementptr inbounds nuw i8, ptr %298, i64 7568
  %307 = getelementptr inbounds nuw i8, ptr %298, i64 7600
  %308 = getelementptr inbounds nuw i8, ptr %298, i64 7656
  %309 = getelementptr inbounds nuw i8, ptr %298, i64 7552
  %310 = getelementptr inbounds nuw i8, ptr %298, i64 4416
  %311 = getelementptr inbounds nuw i8, ptr %298, i64 384
  %312 = getelementptr inbounds nuw i8, ptr %298, i64 448
  %313 = getelementptr inbounds nuw i8, ptr %298, i64 512
  %314 = getelementptr inbounds nuw i8, ptr %298, i64 640
  %315 = shl i64 %280, 4
  %316 = icmp sgt i64 %281, 0
  %317 = getelementptr inbounds nuw i8, ptr %298, i64 7736
  %318 = getelementptr inbounds nuw i8, ptr %298, i64 768
  %319 = getelementptr inbounds nuw i8, ptr %298, i64 7688
  %320 = getelementptr inbounds nuw i8, ptr %298, i64 960
  %321 = getelementptr inbounds nuw i8, ptr %298, i64 1408
  %322 = getelementptr inbounds nuw i8, ptr %298, i64 4096
  %323 = getelementptr inbounds nuw i8, ptr %298, i64 4160
  %324 = getelementptr inbounds nuw i8, ptr %298, i64 4032
  %325 = getelementptr inbounds nuw i8, ptr %298, i64 3840
  %326 = getelementptr inbounds nuw i8, ptr %298, i64 3904
  %327 = getelementptr inbounds nuw i8, ptr %298, i64 3776
  %328 = and i64 %281, 1
  %329 = icmp eq i64 %281, 1
  %330 = and i64 %281, 9223372036854775806
  %331 = icmp eq i64 %328, 0
  br label %332

332:                                              ; preds = %421, %297
  %333 = phi i64 [ 0, %297 ], [ %476, %421 ]
  %334 = shl i64 %333, 32
  %335 = ashr exact i64 %334, 32
  %336 = getelementptr inbounds double, ptr %299, i64 %335
  %337 = load double, ptr %336, align 8, !tbaa !40
  %338 = getelementptr inbounds double, ptr %300, i64 %335
  %339 = load double, ptr %338, align 8, !tbaa !40
  %340 = add nsw i64 %333, %302
  %341 = mul i64 %303, %340
  %342 = getelementptr inbounds double, ptr %301, i64 %341
  %343 = mul nsw i64 %340, 40
  %344 = getelementptr inbounds i8, ptr %304, i64 %343
  br i1 %305, label %345, label %355

345:                                              ; preds = %332
  %346 = load ptr, ptr %306, align 16, !tbaa !44
  %347 = load ptr, ptr %307, align 16, !tbaa !45
  %348 = getelementptr double, ptr %347, i64 %335
  %349 = getelementptr double, ptr %342, i64 %280
  %350 = load ptr, ptr %308, align 8, !tbaa !46
  %351 = load i64, ptr %309, align 64, !tbaa !31
  %352 = getelementptr inbounds double, ptr %10, i64 %335
  %353 = getelementptr i8, ptr %342, i64 %315
  %354 = getelementptr inbounds double, ptr %11, i64 %335
  br label %365

355:                                              ; preds = %396, %332
  %356 = phi double [ %339, %332 ], [ %404, %396 ]
  br i1 %316, label %357, label %421

357:                                              ; preds = %355
  %358 = load ptr, ptr %317, align 8, !tbaa !47
  %359 = getelementptr double, ptr %358, i64 %335
  %360 = getelementptr inbounds double, ptr %318, i64 %335
  %361 = load double, ptr %360, align 8, !tbaa !40
  %362 = load ptr, ptr %319, align 8, !tbaa !48
  %363 = getelementptr double, ptr %362, i64 %335
  %364 = load double, ptr %359, align 8, !tbaa !40
  br i1 %329, label %407, label %478

365:                                              ; preds = %396, %345
  %366 = phi double [ %339, %345 ], [ %404, %396 ]
  %367 = phi i64 [ 0, %345 ], [ %405, %396 ]
  %368 = getelementptr inbounds nuw <8 x double>, ptr %346, i64 %367
  %369 = getelementptr inbounds double, ptr %368, i64 %335
  %370 = load double, ptr %369, align 8, !tbaa !40
  %371 = getelementptr inbounds nuw double, ptr %342, i64 %367
  store double %370, ptr %371, align 8, !tbaa !40
  %372 = getelementptr <8 x double>, ptr %348, i64 %367
  %373 = load double, ptr %372, align 8, !tbaa !40
  %374 = getelementptr double, ptr %349, i64 %367
  store double %373, ptr %374, align 8, !tbaa !40
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %375 = getelementptr inbounds nuw <8 x double>, ptr %350, i64 %367
  %376 = load <8 x double>, ptr %375, align 64, !tbaa !26
  %377 = icmp slt i64 %367, %351
  br i1 %377, label %378, label %383

378:                                              ; preds = %365
  %379 = load <8 x double>, ptr %299, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %380 = load <8 x double>, ptr %368, align 64, !tbaa !26
  %381 = load <8 x double>, ptr %314, align 64, !tbaa !26
  %382 = fmul <8 x double> %380, %381
  br label %396

383:                                              ; preds = %365
  %384 = load <8 x double>, ptr %310, align 64, !tbaa !26
  %385 = load <8 x double>, ptr %299, align 64, !tbaa !26
  %386 = fsub <8 x double> %384, %385
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %387 = load <8 x double>, ptr %368, align 64, !tbaa !26
  %388 = load <8 x double>, ptr %311, align 64, !tbaa !26
  %389 = load <8 x double>, ptr %312, align 64, !tbaa !26
  %390 = load <8 x double>, ptr %313, align 64, !tbaa !26
  %391 = fmul <8 x double> %387, %390
  %392 = fmul <8 x double> %391, splat (double 0x3FD5555555555555)
  %393 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %389, <8 x double> splat (double 5.000000e-01), <8 x double> %392)
  %394 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %387, <8 x double> %393, <8 x double> %388)
  %395 = fmul <8 x double> %387, %394
  br label %396

396:                                              ; preds = %383, %378
  %397 = phi <8 x double> [ %379, %378 ], [ %386, %383 ]
  %398 = phi <8 x double> [ %382, %378 ], [ %395, %383 ]
  %399 = fmul <8 x double> %376, %397
  store <8 x double> %399, ptr %10, align 64, !tbaa !26
  %400 = fmul <8 x double> %399, %398
  store <8 x double> %400, ptr %11, align 64, !tbaa !26
  %401 = load double, ptr %352, align 8, !tbaa !40
  %402 = getelementptr double, ptr %353, i64 %367
  store double %401, ptr %402, align 8, !tbaa !40
  %403 = load double, ptr %354, align 8, !tbaa !40
  %404 = fadd double %366, %403
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %405 = add nuw nsw i64 %367, 1
  %406 = icmp eq i64 %405, %280
  br i1 %406, label %355, label %365, !llvm.loop !49

407:                                              ; preds = %478, %357
  %408 = phi double [ poison, %357 ], [ %498, %478 ]
  %409 = phi double [ %364, %357 ], [ %493, %478 ]
  %410 = phi double [ %356, %357 ], [ %498, %478 ]
  %411 = phi i64 [ 0, %357 ], [ %491, %478 ]
  br i1 %331, label %421, label %412

412:                                              ; preds = %407
  %413 = getelementptr <8 x double>, ptr %359, i64 %411
  %414 = getelementptr i8, ptr %413, i64 64
  %415 = load double, ptr %414, align 8, !tbaa !40
  %416 = fsub double %415, %409
  %417 = fmul double %361, %416
  %418 = getelementptr <8 x double>, ptr %363, i64 %411
  %419 = load double, ptr %418, align 8, !tbaa !40
  %420 = tail call double @llvm.fmuladd.f64(double %417, double %419, double %410)
  br label %421

421:                                              ; preds = %412, %407, %355
  %422 = phi double [ %356, %355 ], [ %408, %407 ], [ %420, %412 ]
  %423 = getelementptr inbounds double, ptr %320, i64 %335
  %424 = load double, ptr %423, align 8, !tbaa !40
  %425 = getelementptr inbounds double, ptr %311, i64 %335
  %426 = load double, ptr %425, align 8, !tbaa !40
  %427 = getelementptr inbounds double, ptr %312, i64 %335
  %428 = load double, ptr %427, align 8, !tbaa !40
  %429 = getelementptr inbounds double, ptr %313, i64 %335
  %430 = load double, ptr %429, align 8, !tbaa !40
  %431 = fmul double %424, %430
  %432 = fdiv double %431, 3.000000e+00
  %433 = tail call double @llvm.fmuladd.f64(double %428, double 5.000000e-01, double %432)
  %434 = tail call double @llvm.fmuladd.f64(double %424, double %433, double %426)
  %435 = fmul double %424, %434
  %436 = getelementptr inbounds double, ptr %321, i64 %335
  %437 = load double, ptr %436, align 8, !tbaa !40
  %438 = fsub double %437, %337
  %439 = getelementptr inbounds double, ptr %314, i64 %335
  %440 = load double, ptr %439, align 8, !tbaa !40
  %441 = fmul double %337, %440
  %442 = fmul double %424, %441
  %443 = tail call double @llvm.fmuladd.f64(double %438, double %435, double %442)
  %444 = getelementptr inbounds double, ptr %322, i64 %335
  %445 = load double, ptr %444, align 8, !tbaa !40
  %446 = getelementptr inbounds double, ptr %323, i64 %335
  %447 = load double, ptr %446, align 8, !tbaa !40
  %448 = fsub double %445, %447
  %449 = fsub double %422, %443
  %450 = fsub double %448, %449
  %451 = fcmp ogt double %445, 0.000000e+00
  %452 = fneg double %445
  %453 = select i1 %451, double %445, double %452
  %454 = fcmp ogt double %447, 0.000000e+00
  %455 = fneg double %447
  %456 = select i1 %454, double %447, double %455
  %457 = fadd double %453, %456
  %458 = fcmp ogt double %450, 0.000000e+00
  %459 = fneg double %450
  %460 = select i1 %458, double %450, double %459
  %461 = fcmp ogt double %457, 1.000000e+00
  %462 = select i1 %461, double %457, double 1.000000e+00
  %463 = fdiv double %460, %462
  store double %463, ptr %344, align 8, !tbaa !40
  %464 = getelementptr inbounds double, ptr %324, i64 %335
  %465 = load double, ptr %464, align 8, !tbaa !40
  %466 = getelementptr inbounds nuw i8, ptr %344, i64 8
  store double %465, ptr %466, align 8, !tbaa !40
  %467 = getelementptr inbounds double, ptr %325, i64 %335
  %468 = load double, ptr %467, align 8, !tbaa !40
  %469 = getelementptr inbounds nuw i8, ptr %344, i64 16
  store double %468, ptr %469, align 8, !tbaa !40
  %470 = getelementptr inbounds double, ptr %326, i64 %335
  %471 = load double, ptr %470, align 8, !tbaa !40
  %472 = getelementptr inbounds nuw i8, ptr %344, i64 24
  store double %471, ptr %472, align 8, !tbaa !40
  %473 = getelementptr inbounds double, ptr %327, i64 %335
  %474 = load double, ptr %473, align 8, !tbaa !40
  %475 = getelementptr inbounds nuw i8, ptr %344, i64 32
  store double %474, ptr %475, align 8, !tbaa !40
  %476 = add nuw nsw i64 %333, 1
  %477 = icmp eq i64 %476, %295
  br i1 %477, label %501, label %332, !llvm.loop !51

478:                                              ; preds = %357, %478
  %479 = phi double [ %493, %478 ], [ %364, %357 ]
  %480 = phi double [ %498, %478 ], [ %356, %357 ]
  %481 = phi i64 [ %491, %478 ], [ 0, %357 ]
  %482 = phi i64 [ %499, %478 ], [ 0, %357 ]
  %483 = or disjoint i64 %481, 1
  %484 = getelementptr <8 x double>, ptr %359, i64 %483
  %485 = load double, ptr %484, align 8, !tbaa !40
  %486 = fsub double %485, %479
  %487 = fmul double %361, %486
  %488 = getelementptr <8 x double>, ptr %363, i64 %481
  %489 = load double, ptr %488, align 8, !tbaa !40
  %490 = tail call double @llvm.fmuladd.f64(double %487, double %489, double %480)
  %491 = add nuw nsw i64 %481, 2
  %492 = getelementptr <8 x double>, ptr %359, i64 %491
  %493 = load double, ptr %492, align 8, !tbaa !40
  %494 = fsub double %493, %485
  %495 = fmul double %361, %494
  %496 = getelementptr <8 x double>, ptr %363, i64 %483
  %497 = load double, ptr %496, align 8, !tbaa !40
  %498 = tail call double @llvm.fmuladd.f64(double %495, double %497, double %490)
  %499 = add i64 %482, 2
  %500 = icmp eq i64 %499, %330
  br i1 %500, label %407, label %478, !llvm.loop !52

501:                                              ; preds = %421, %279
  %502 = load i64, ptr %132, align 8, !tbaa !27
  %503 = load i64, ptr %0, align 8, !tbaa !37
  %504 = icmp slt i64 %502, %503
  br i1 %504, label %506, label %505

505:                                              ; preds = %501
  store i64 0, ptr %110, align 8, !tbaa !30
  store i64 0, ptr %133, align 8, !tbaa !30
  store i64 0, ptr %223, align 8, !tbaa !30
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
  br label %517

506:                                              ; preds = %501
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  %507 = load i64, ptr %110, align 8, !tbaa !30
  %508 = icmp eq i64 %507, 0
  br i1 %508, label %517, label %509

509:                                              ; preds = %506
  %510 = load double, ptr %118, align 8, !tbaa !40
  %511 = fcmp oeq double %510, 0.000000e+00
  br i1 %511, label %517, label %512

512:                                              ; preds = %4835, %4877, %4874, %3267, %3552, %509
  %513 = load i64, ptr %111, align 8, !tbaa !38
  %514 = load i64, ptr %112, align 8, !tbaa !39
  %515 = sub nsw i64 %513, %514
  %516 = icmp slt i64 %515, 16
  br i1 %516, label %4878, label %273, !llvm.loop !53

517:                                              ; preds = %505, %506, %276, %273, %509
  %518 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %519 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %518)
  %520 = icmp eq i64 %519, 0
  br i1 %520, label %4878, label %521

521:                                              ; preds = %517
  %522 = load <8 x i64>, ptr %133, align 64, !tbaa !26
  %523 = and <8 x i64> %522, %518
  %524 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %523)
  %525 = icmp eq i64 %524, 0
  %526 = load i64, ptr %144, align 8, !tbaa !20
  br i1 %525, label %1103, label %527

527:                                              ; preds = %521
  %528 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %529 = load <8 x double>, ptr %135, align 64, !tbaa !26
  %530 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %531 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %532 = fsub <8 x double> %530, %531
  %533 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %529, <8 x double> %532, <8 x double> %528)
  %534 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %535 = fcmp une <8 x double> %534, splat (double 2.000000e+00)
  %536 = select <8 x i1> %535, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %537 = fmul <8 x double> %533, %536
  %538 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %539 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %540 = fcmp olt <8 x double> %538, %539
  %541 = select <8 x i1> %540, <8 x double> %538, <8 x double> %539
  %542 = fcmp olt <8 x double> %541, %537
  %543 = select <8 x i1> %542, <8 x double> %541, <8 x double> %537
  %544 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %545 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %546 = fadd <8 x double> %544, %545
  %547 = fsub <8 x double> %546, %530
  %548 = fmul <8 x double> %543, splat (double 0x3FF000010C6F7A0B)
  %549 = fcmp ole <8 x double> %547, %548
  %550 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %551 = fcmp ogt <8 x double> %550, %543
  %552 = select <8 x i1> %551, <8 x double> %550, <8 x double> %543
  %553 = icmp ne <8 x i64> %523, zeroinitializer
  %554 = select <8 x i1> %549, <8 x i1> %553, <8 x i1> zeroinitializer
  %555 = select <8 x i1> %554, <8 x double> %552, <8 x double> %550
  store <8 x double> %555, ptr %143, align 64, !tbaa !26
  %556 = fmul <8 x double> %543, splat (double 2.000000e+00)
  %557 = fcmp uge <8 x double> %547, %556
  %558 = fmul <8 x double> %547, splat (double 5.000000e-01)
  %559 = select <8 x i1> %557, <8 x double> %543, <8 x double> %558
  %560 = select <8 x i1> %549, <8 x double> %547, <8 x double> %559
  %561 = icmp sgt i64 %526, 0
  %562 = load <8 x double>, ptr %145, align 64, !tbaa !26
  br i1 %561, label %563, label %610

563:                                              ; preds = %527
  %564 = load ptr, ptr %129, align 8, !tbaa !28
  br label %565

565:                                              ; preds = %563, %565
  %566 = phi <8 x double> [ %560, %563 ], [ %607, %565 ]
  %567 = phi i64 [ 0, %563 ], [ %608, %565 ]
  %568 = getelementptr inbounds nuw %struct.Piece, ptr %564, i64 %567
  %569 = getelementptr inbounds nuw i8, ptr %568, i64 3776
  %570 = load <8 x double>, ptr %569, align 64, !tbaa !26
  %571 = getelementptr inbounds nuw i8, ptr %568, i64 1472
  %572 = load <8 x double>, ptr %571, align 64, !tbaa !26
  %573 = fsub <8 x double> %570, %572
  %574 = getelementptr inbounds nuw i8, ptr %568, i64 832
  %575 = load <8 x double>, ptr %574, align 64, !tbaa !26
  %576 = fmul <8 x double> %573, %575
  %577 = getelementptr inbounds nuw i8, ptr %568, i64 1600
  %578 = load <8 x double>, ptr %577, align 64, !tbaa !26
  %579 = getelementptr inbounds nuw i8, ptr %568, i64 4032
  %580 = load <8 x double>, ptr %579, align 64, !tbaa !26
  %581 = fsub <8 x double> %578, %580
  %582 = getelementptr inbounds nuw i8, ptr %568, i64 7360
  %583 = load <8 x i64>, ptr %582, align 64, !tbaa !26
  %584 = getelementptr inbounds nuw i8, ptr %568, i64 7296
  %585 = load <8 x double>, ptr %584, align 64, !tbaa !26
  %586 = fcmp une <8 x double> %585, splat (double 1.000000e+00)
  %587 = select <8 x i1> %586, <8 x double> %576, <8 x double> %581
  %588 = getelementptr inbounds nuw i8, ptr %568, i64 3840
  %589 = load <8 x double>, ptr %588, align 64, !tbaa !26
  %590 = icmp eq <8 x i64> %583, zeroinitializer
  %591 = select <8 x i1> %590, <8 x double> %589, <8 x double> %587
  %592 = getelementptr inbounds nuw i8, ptr %568, i64 5632
  %593 = load <8 x double>, ptr %592, align 64, !tbaa !26
  %594 = getelementptr inbounds nuw i8, ptr %568, i64 7168
  %595 = load <8 x double>, ptr %594, align 64, !tbaa !26
  %596 = fdiv <8 x double> %595, %562
  %597 = select <8 x i1> %590, <8 x double> %596, <8 x double> zeroinitializer
  %598 = fsub <8 x double> %593, %597
  %599 = fcmp ule <8 x double> %591, zeroinitializer
  %600 = fcmp ule <8 x double> %598, zeroinitializer
  %601 = or <8 x i1> %599, %600
  %602 = fdiv <8 x double> %591, %598
  %603 = fcmp ogt <8 x double> %602, splat (double 1.000000e-03)
  %604 = select <8 x i1> %603, <8 x double> %602, <8 x double> splat (double 1.000000e-03)
  %605 = fcmp olt <8 x double> %566, %604
  %606 = select <8 x i1> %601, <8 x i1> splat (i1 true), <8 x i1> %605
  %607 = select <8 x i1> %606, <8 x double> %566, <8 x double> %604
  %608 = add nuw nsw i64 %567, 1
  %609 = icmp eq i64 %608, %526
  br i1 %609, label %610, label %565, !llvm.loop !54

610:                                              ; preds = %565, %527
  %611 = phi <8 x double> [ %560, %527 ], [ %607, %565 ]
  %612 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %611)
  %613 = insertelement <8 x double> poison, double %612, i64 0
  %614 = shufflevector <8 x double> %613, <8 x double> poison, <8 x i32> zeroinitializer
  %615 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %616 = icmp eq <8 x i64> %523, zeroinitializer
  %617 = select <8 x i1> %616, <8 x double> %615, <8 x double> %614
  store <8 x double> %617, ptr %146, align 64, !tbaa !26
  %618 = load <8 x i64>, ptr %147, align 64, !tbaa !26
  %619 = fdiv <8 x double> %617, %562
  %620 = fdiv <8 x double> splat (double 1.000000e+00), %617
  %621 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %619, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %622 = fadd <8 x double> %619, splat (double 1.000000e+00)
  %623 = fdiv <8 x double> %621, %622
  %624 = fmul <8 x double> %620, %623
  %625 = icmp eq <8 x i64> %618, zeroinitializer
  %626 = select <8 x i1> %625, <8 x double> %624, <8 x double> %620
  %627 = fneg <8 x double> %620
  %628 = fneg <8 x double> %622
  %629 = fmul <8 x double> %620, %628
  %630 = select <8 x i1> %625, <8 x double> %629, <8 x double> %627
  %631 = fmul <8 x double> %619, %619
  %632 = fdiv <8 x double> %631, %622
  %633 = fmul <8 x double> %620, %632
  %634 = select <8 x i1> %625, <8 x double> %633, <8 x double> zeroinitializer
  %635 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %636 = select <8 x i1> %616, <8 x double> %635, <8 x double> %626
  store <8 x double> %636, ptr %148, align 64, !tbaa !26
  %637 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %638 = select <8 x i1> %616, <8 x double> %637, <8 x double> %630
  store <8 x double> %638, ptr %149, align 64, !tbaa !26
  %639 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %640 = select <8 x i1> %616, <8 x double> %639, <8 x double> %634
  store <8 x double> %640, ptr %150, align 64, !tbaa !26
  %641 = select <8 x i1> %625, <8 x double> %619, <8 x double> zeroinitializer
  %642 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %643 = load <8 x double>, ptr %153, align 64, !tbaa !26
  %644 = fsub <8 x double> %642, %643
  %645 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %644, <8 x double> %642)
  %646 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %647 = select <8 x i1> %616, <8 x double> %646, <8 x double> %645
  %648 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %649 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %650 = fsub <8 x double> %648, %649
  %651 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %650, <8 x double> %648)
  %652 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %653 = select <8 x i1> %616, <8 x double> %652, <8 x double> %651
  store <8 x double> %653, ptr %237, align 64, !tbaa !26
  %654 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %655 = load <8 x double>, ptr %242, align 64, !tbaa !26
  %656 = fsub <8 x double> %654, %655
  %657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %656, <8 x double> %654)
  %658 = load <8 x double>, ptr %240, align 64, !tbaa !26
  %659 = select <8 x i1> %616, <8 x double> %658, <8 x double> %657
  store <8 x double> %659, ptr %240, align 64, !tbaa !26
  %660 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %661 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %662 = fsub <8 x double> %660, %661
  %663 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %662, <8 x double> %660)
  %664 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %665 = select <8 x i1> %616, <8 x double> %664, <8 x double> %663
  store <8 x double> %665, ptr %243, align 64, !tbaa !26
  %666 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %667 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %668 = fsub <8 x double> %666, %667
  %669 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %668, <8 x double> %666)
  %670 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %671 = select <8 x i1> %616, <8 x double> %670, <8 x double> %669
  store <8 x double> %671, ptr %246, align 64, !tbaa !26
  %672 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %673 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %674 = fsub <8 x double> %672, %673
  %675 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %641, <8 x double> %674, <8 x double> %672)
  %676 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %677 = select <8 x i1> %616, <8 x double> %676, <8 x double> %675
  store <8 x double> %677, ptr %249, align 64, !tbaa !26
  %678 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %679 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %680 = icmp eq <8 x i64> %678, zeroinitializer
  %681 = select <8 x i1> %680, <8 x double> zeroinitializer, <8 x double> %679
  %682 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %683 = fsub <8 x double> %681, %682
  %684 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %685 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %686 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %687 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %686, <8 x double> %642, <8 x double> %685)
  %688 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %689 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %684, <8 x double> %687, <8 x double> %688)
  %690 = fdiv <8 x double> %683, %689
  %691 = and <8 x i64> %618, %523
  %692 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %693 = fcmp une <8 x double> %692, zeroinitializer
  %694 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %695 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %694, <8 x double> %690, <8 x double> %642)
  %696 = icmp eq <8 x i64> %691, zeroinitializer
  %697 = select <8 x i1> %693, <8 x i1> splat (i1 true), <8 x i1> %696
  %698 = select <8 x i1> %697, <8 x double> %647, <8 x double> %695
  store <8 x double> %698, ptr %151, align 64, !tbaa !26
  %699 = load i64, ptr %144, align 8, !tbaa !20
  %700 = icmp sgt i64 %699, 0
  br i1 %700, label %701, label %1013

701:                                              ; preds = %610, %996
  %702 = phi i64 [ %997, %996 ], [ 0, %610 ]
  %703 = load ptr, ptr %129, align 8, !tbaa !28
  %704 = getelementptr inbounds nuw %struct.Piece, ptr %703, i64 %702
  %705 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %706 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %707 = getelementptr inbounds nuw i8, ptr %704, i64 7424
  %708 = load <8 x i64>, ptr %707, align 64, !tbaa !26
  %709 = fdiv <8 x double> %705, %706
  %710 = fdiv <8 x double> splat (double 1.000000e+00), %705
  %711 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %709, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %712 = fadd <8 x double> %709, splat (double 1.000000e+00)
  %713 = fdiv <8 x double> %711, %712
  %714 = fmul <8 x double> %710, %713
  %715 = icmp eq <8 x i64> %708, zeroinitializer
  %716 = select <8 x i1> %715, <8 x double> %714, <8 x double> %710
  %717 = fneg <8 x double> %710
  %718 = fneg <8 x double> %712
  %719 = fmul <8 x double> %710, %718
  %720 = select <8 x i1> %715, <8 x double> %719, <8 x double> %717
  %721 = fmul <8 x double> %709, %709
  %722 = fdiv <8 x double> %721, %712
  %723 = fmul <8 x double> %710, %722
  %724 = select <8 x i1> %715, <8 x double> %723, <8 x double> zeroinitializer
  %725 = getelementptr inbounds nuw i8, ptr %704, i64 5248
  %726 = load <8 x double>, ptr %725, align 64, !tbaa !26
  %727 = select <8 x i1> %616, <8 x double> %726, <8 x double> %716
  store <8 x double> %727, ptr %725, align 64, !tbaa !26
  %728 = getelementptr inbounds nuw i8, ptr %704, i64 5312
  %729 = load <8 x double>, ptr %728, align 64, !tbaa !26
  %730 = select <8 x i1> %616, <8 x double> %729, <8 x double> %720
  store <8 x double> %730, ptr %728, align 64, !tbaa !26
  %731 = getelementptr inbounds nuw i8, ptr %704, i64 5376
  %732 = load <8 x double>, ptr %731, align 64, !tbaa !26
  %733 = select <8 x i1> %616, <8 x double> %732, <8 x double> %724
  store <8 x double> %733, ptr %731, align 64, !tbaa !26
  %734 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %735 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %736 = fdiv <8 x double> %734, %735
  %737 = select <8 x i1> %715, <8 x double> %736, <8 x double> zeroinitializer
  %738 = getelementptr inbounds nuw i8, ptr %704, i64 2944
  %739 = getelementptr inbounds nuw i8, ptr %704, i64 3712
  %740 = getelementptr inbounds nuw i8, ptr %704, i64 4480
  br label %1000

741:                                              ; preds = %1000
  %742 = load <8 x double>, ptr %738, align 64, !tbaa !26
  %743 = load <8 x double>, ptr %739, align 64, !tbaa !26
  %744 = fcmp olt <8 x double> %742, %743
  %745 = select <8 x i1> %744, <8 x double> %742, <8 x double> %743
  %746 = load <8 x double>, ptr %704, align 64, !tbaa !26
  %747 = fmul <8 x double> %746, splat (double 3.000000e-01)
  %748 = fcmp ogt <8 x double> %745, %747
  %749 = select <8 x i1> %748, <8 x double> %745, <8 x double> %747
  %750 = select <8 x i1> %616, <8 x double> %742, <8 x double> %749
  store <8 x double> %750, ptr %738, align 64, !tbaa !26
  %751 = getelementptr inbounds nuw i8, ptr %704, i64 5632
  %752 = getelementptr inbounds nuw i8, ptr %704, i64 3456
  %753 = load <8 x double>, ptr %752, align 64, !tbaa !26
  %754 = fcmp ogt <8 x double> %753, zeroinitializer
  %755 = select <8 x i1> %754, <8 x double> %753, <8 x double> zeroinitializer
  %756 = load <8 x double>, ptr %751, align 64, !tbaa !26
  %757 = select <8 x i1> %616, <8 x double> %756, <8 x double> %755
  store <8 x double> %757, ptr %751, align 64, !tbaa !26
  %758 = getelementptr inbounds nuw i8, ptr %704, i64 384
  %759 = load <8 x double>, ptr %758, align 64, !tbaa !26
  %760 = getelementptr inbounds nuw i8, ptr %704, i64 448
  %761 = load <8 x double>, ptr %760, align 64, !tbaa !26
  %762 = getelementptr inbounds nuw i8, ptr %704, i64 512
  %763 = load <8 x double>, ptr %762, align 64, !tbaa !26
  %764 = getelementptr inbounds nuw i8, ptr %704, i64 640
  %765 = load <8 x double>, ptr %764, align 64, !tbaa !26
  %766 = getelementptr inbounds nuw i8, ptr %704, i64 768
  %767 = load <8 x double>, ptr %766, align 64, !tbaa !26
  %768 = getelementptr inbounds nuw i8, ptr %704, i64 832
  %769 = getelementptr inbounds nuw i8, ptr %704, i64 1536
  %770 = load <8 x double>, ptr %769, align 64, !tbaa !26
  %771 = getelementptr inbounds nuw i8, ptr %704, i64 4416
  %772 = load <8 x double>, ptr %771, align 64, !tbaa !26
  %773 = fsub <8 x double> %772, %770
  %774 = getelementptr inbounds nuw i8, ptr %704, i64 5184
  %775 = load <8 x double>, ptr %774, align 64, !tbaa !26
  %776 = fsub <8 x double> %775, %770
  %777 = load <8 x double>, ptr %728, align 64, !tbaa !26
  %778 = load <8 x double>, ptr %731, align 64, !tbaa !26
  %779 = fmul <8 x double> %773, %777
  %780 = fmul <8 x double> %776, %778
  %781 = fmul <8 x double> %770, %777
  %782 = fmul <8 x double> %765, %781
  %783 = fmul <8 x double> %770, %778
  %784 = fmul <8 x double> %765, %783
  %785 = getelementptr inbounds nuw i8, ptr %704, i64 7568
  %786 = load ptr, ptr %785, align 16, !tbaa !44
  %787 = getelementptr inbounds nuw i8, ptr %704, i64 7576
  %788 = load ptr, ptr %787, align 8, !tbaa !55
  %789 = getelementptr inbounds nuw i8, ptr %704, i64 7656
  %790 = load ptr, ptr %789, align 8, !tbaa !46
  %791 = getelementptr inbounds nuw i8, ptr %704, i64 7560
  %792 = load ptr, ptr %791, align 8, !tbaa !56
  %793 = getelementptr inbounds nuw i8, ptr %704, i64 7584
  %794 = load ptr, ptr %793, align 32, !tbaa !57
  %795 = load i64, ptr %119, align 16, !tbaa !21
  %796 = icmp sgt i64 %795, 0
  br i1 %796, label %797, label %799

797:                                              ; preds = %741
  %798 = getelementptr inbounds nuw i8, ptr %704, i64 7552
  br label %812

799:                                              ; preds = %843, %741
  %800 = fmul <8 x double> %767, %777
  %801 = fmul <8 x double> %767, %778
  %802 = getelementptr inbounds nuw i8, ptr %704, i64 7736
  %803 = load ptr, ptr %802, align 8, !tbaa !47
  %804 = getelementptr inbounds nuw i8, ptr %704, i64 7744
  %805 = load ptr, ptr %804, align 64, !tbaa !58
  %806 = load i64, ptr %120, align 8, !tbaa !22
  %807 = icmp sgt i64 %806, 0
  br i1 %807, label %808, label %877

808:                                              ; preds = %799
  %809 = getelementptr inbounds nuw i8, ptr %704, i64 7688
  %810 = getelementptr inbounds nuw i8, ptr %704, i64 7696
  %811 = getelementptr inbounds nuw i8, ptr %704, i64 7704
  br label %850

812:                                              ; preds = %797, %843
  %813 = phi i64 [ 0, %797 ], [ %847, %843 ]
  %814 = getelementptr inbounds nuw <8 x double>, ptr %786, i64 %813
  %815 = load <8 x double>, ptr %814, align 64, !tbaa !26
  %816 = getelementptr inbounds nuw <8 x double>, ptr %788, i64 %813
  %817 = load <8 x double>, ptr %816, align 64, !tbaa !26
  %818 = fsub <8 x double> %815, %817
  %819 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %737, <8 x double> %818, <8 x double> %815)
  %820 = getelementptr inbounds nuw <8 x double>, ptr %792, i64 %813
  %821 = load <8 x double>, ptr %820, align 64, !tbaa !26
  %822 = select <8 x i1> %616, <8 x double> %821, <8 x double> %819
  store <8 x double> %822, ptr %820, align 64, !tbaa !26
  %823 = load i64, ptr %798, align 64, !tbaa !31
  %824 = icmp slt i64 %813, %823
  %825 = getelementptr inbounds nuw <8 x double>, ptr %790, i64 %813
  %826 = load <8 x double>, ptr %825, align 64, !tbaa !26
  br i1 %824, label %827, label %830

827:                                              ; preds = %812
  %828 = fmul <8 x double> %784, %817
  %829 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %782, <8 x double> %815, <8 x double> %828)
  br label %843

830:                                              ; preds = %812
  %831 = fmul <8 x double> %763, %815
  %832 = fmul <8 x double> %831, splat (double 0x3FD5555555555555)
  %833 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %761, <8 x double> splat (double 5.000000e-01), <8 x double> %832)
  %834 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %815, <8 x double> %833, <8 x double> %759)
  %835 = fmul <8 x double> %815, %834
  %836 = fmul <8 x double> %763, %817
  %837 = fmul <8 x double> %836, splat (double 0x3FD5555555555555)
  %838 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %761, <8 x double> splat (double 5.000000e-01), <8 x double> %837)
  %839 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %817, <8 x double> %838, <8 x double> %759)
  %840 = fmul <8 x double> %817, %839
  %841 = fmul <8 x double> %780, %840
  %842 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %779, <8 x double> %835, <8 x double> %841)
  br label %843

843:                                              ; preds = %830, %827
  %844 = phi <8 x double> [ %842, %830 ], [ %829, %827 ]
  %845 = fmul <8 x double> %844, %826
  %846 = getelementptr inbounds nuw <8 x double>, ptr %794, i64 %813
  store <8 x double> %845, ptr %846, align 64, !tbaa !26
  %847 = add nuw nsw i64 %813, 1
  %848 = load i64, ptr %119, align 16, !tbaa !21
  %849 = icmp slt i64 %847, %848
  br i1 %849, label %812, label %799, !llvm.loop !59

850:                                              ; preds = %808, %850
  %851 = phi i64 [ 0, %808 ], [ %852, %850 ]
  %852 = add nuw nsw i64 %851, 1
  %853 = getelementptr inbounds nuw <8 x double>, ptr %803, i64 %852
  %854 = load <8 x double>, ptr %853, align 64, !tbaa !26
  %855 = getelementptr inbounds nuw <8 x double>, ptr %803, i64 %851
  %856 = load <8 x double>, ptr %855, align 64, !tbaa !26
  %857 = fsub <8 x double> %854, %856
  %858 = load ptr, ptr %809, align 8, !tbaa !48
  %859 = getelementptr inbounds nuw <8 x double>, ptr %858, i64 %851
  %860 = load <8 x double>, ptr %859, align 64, !tbaa !26
  %861 = fmul <8 x double> %857, %860
  %862 = getelementptr inbounds nuw <8 x double>, ptr %805, i64 %852
  %863 = load <8 x double>, ptr %862, align 64, !tbaa !26
  %864 = getelementptr inbounds nuw <8 x double>, ptr %805, i64 %851
  %865 = load <8 x double>, ptr %864, align 64, !tbaa !26
  %866 = fsub <8 x double> %863, %865
  %867 = load ptr, ptr %810, align 16, !tbaa !60
  %868 = getelementptr inbounds nuw <8 x double>, ptr %867, i64 %851
  %869 = load <8 x double>, ptr %868, align 64, !tbaa !26
  %870 = fmul <8 x double> %866, %869
  %871 = fmul <8 x double> %801, %870
  %872 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %800, <8 x double> %861, <8 x double> %871)
  %873 = load ptr, ptr %811, align 8, !tbaa !61
  %874 = getelementptr inbounds nuw <8 x double>, ptr %873, i64 %851
  store <8 x double> %872, ptr %874, align 64, !tbaa !26
  %875 = load i64, ptr %120, align 8, !tbaa !22
  %876 = icmp slt i64 %852, %875
  br i1 %876, label %850, label %877, !llvm.loop !62

877:                                              ; preds = %850, %799
  %878 = getelementptr inbounds nuw i8, ptr %704, i64 1664
  %879 = load <8 x double>, ptr %878, align 64, !tbaa !26
  %880 = fcmp ogt <8 x double> %879, zeroinitializer
  %881 = bitcast <8 x i1> %880 to i8
  %882 = icmp eq i8 %881, 0
  br i1 %882, label %883, label %887

883:                                              ; preds = %877
  %884 = getelementptr inbounds nuw i8, ptr %704, i64 7168
  %885 = load <8 x double>, ptr %884, align 64, !tbaa !26
  %886 = select <8 x i1> %616, <8 x double> %885, <8 x double> zeroinitializer
  store <8 x double> %886, ptr %884, align 64, !tbaa !26
  br label %996

887:                                              ; preds = %877
  %888 = load <8 x double>, ptr %769, align 64, !tbaa !26
  %889 = getelementptr inbounds nuw i8, ptr %704, i64 1728
  %890 = load <8 x double>, ptr %889, align 64, !tbaa !26
  %891 = getelementptr inbounds nuw i8, ptr %704, i64 1856
  %892 = load <8 x double>, ptr %891, align 64, !tbaa !26
  %893 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %894 = fneg <8 x double> %893
  %895 = fdiv <8 x double> %894, %890
  %896 = fcmp ogt <8 x double> %895, splat (double -7.000000e+02)
  %897 = select <8 x i1> %896, <8 x double> %895, <8 x double> splat (double -7.000000e+02)
  %898 = fcmp olt <8 x double> %897, splat (double 7.000000e+02)
  %899 = select <8 x i1> %898, <8 x double> %897, <8 x double> splat (double 7.000000e+02)
  %900 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %899, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %901 = fadd <8 x double> %900, splat (double 0xC338000000000000)
  %902 = fneg <8 x double> %901
  %903 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %902, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %899)
  %904 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %902, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %903)
  %905 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %904, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %906 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %905, <8 x double> %904, <8 x double> splat (double 0x3E5AE64567F544E4))
  %907 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %906, <8 x double> %904, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %908 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %907, <8 x double> %904, <8 x double> splat (double 0x3EC71DE3A556C734))
  %909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %908, <8 x double> %904, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %910 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %909, <8 x double> %904, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %910, <8 x double> %904, <8 x double> splat (double 0x3F56C16C16C16C17))
  %912 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %911, <8 x double> %904, <8 x double> splat (double 0x3F81111111111111))
  %913 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %912, <8 x double> %904, <8 x double> splat (double 0x3FA5555555555555))
  %914 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %913, <8 x double> %904, <8 x double> splat (double 0x3FC5555555555555))
  %915 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %914, <8 x double> %904, <8 x double> splat (double 5.000000e-01))
  %916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %915, <8 x double> %904, <8 x double> splat (double 1.000000e+00))
  %917 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %916, <8 x double> %904, <8 x double> splat (double 1.000000e+00))
  %918 = bitcast <8 x double> %900 to <8 x i64>
  %919 = shl <8 x i64> %918, splat (i64 52)
  %920 = bitcast <8 x double> %917 to <8 x i64>
  %921 = add <8 x i64> %919, %920
  %922 = bitcast <8 x i64> %921 to <8 x double>
  %923 = fsub <8 x double> splat (double 1.000000e+00), %922
  %924 = load <8 x double>, ptr %771, align 64, !tbaa !26
  %925 = fsub <8 x double> %924, %888
  %926 = load ptr, ptr %791, align 8, !tbaa !56
  %927 = load ptr, ptr %785, align 16, !tbaa !44
  %928 = getelementptr inbounds nuw i8, ptr %704, i64 7600
  %929 = load ptr, ptr %928, align 16, !tbaa !45
  %930 = load ptr, ptr %789, align 8, !tbaa !46
  %931 = getelementptr inbounds nuw i8, ptr %704, i64 7592
  %932 = load ptr, ptr %931, align 8, !tbaa !63
  %933 = getelementptr inbounds nuw i8, ptr %704, i64 7552
  %934 = load i64, ptr %933, align 64, !tbaa !31
  %935 = load i64, ptr %119, align 16, !tbaa !21
  %936 = icmp slt i64 %934, %935
  br i1 %936, label %937, label %941

937:                                              ; preds = %887
  %938 = getelementptr inbounds nuw i8, ptr %704, i64 1792
  %939 = load <8 x double>, ptr %938, align 64, !tbaa !26
  %940 = fneg <8 x double> %939
  br label %953

941:                                              ; preds = %953, %887
  %942 = phi <8 x double> [ zeroinitializer, %887 ], [ %984, %953 ]
  %943 = phi <8 x double> [ zeroinitializer, %887 ], [ %992, %953 ]
  %944 = getelementptr inbounds nuw i8, ptr %704, i64 3776
  %945 = load <8 x double>, ptr %944, align 64, !tbaa !26
  %946 = fsub <8 x double> %945, %924
  %947 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %942, <8 x double> %946, <8 x double> %943)
  %948 = getelementptr inbounds nuw i8, ptr %704, i64 7168
  %949 = load <8 x double>, ptr %768, align 64, !tbaa !26
  %950 = fmul <8 x double> %949, %947
  %951 = load <8 x double>, ptr %948, align 64, !tbaa !26
  %952 = select <8 x i1> %616, <8 x double> %951, <8 x double> %950
  store <8 x double> %952, ptr %948, align 64, !tbaa !26
  br label %996

953:                                              ; preds = %937, %953
  %954 = phi <8 x double> [ zeroinitializer, %937 ], [ %992, %953 ]
  %955 = phi i64 [ %934, %937 ], [ %993, %953 ]
  %956 = getelementptr inbounds <8 x double>, ptr %927, i64 %955
  %957 = load <8 x double>, ptr %956, align 64, !tbaa !26
  %958 = getelementptr inbounds <8 x double>, ptr %926, i64 %955
  %959 = load <8 x double>, ptr %958, align 64, !tbaa !26
  %960 = fadd <8 x double> %957, %959
  %961 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %960, <8 x double> splat (double 5.000000e-01), <8 x double> %940)
  %962 = fmul <8 x double> %892, %961
  %963 = fcmp ogt <8 x double> %962, splat (double -5.000000e+00)
  %964 = select <8 x i1> %963, <8 x double> %962, <8 x double> splat (double -5.000000e+00)
  %965 = fcmp olt <8 x double> %964, splat (double 5.000000e+00)
  %966 = select <8 x i1> %965, <8 x double> %964, <8 x double> splat (double 5.000000e+00)
  %967 = fmul <8 x double> %966, %966
  %968 = fadd <8 x double> %967, splat (double 3.780000e+02)
  %969 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %968, <8 x double> splat (double 1.732500e+04))
  %970 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %969, <8 x double> splat (double 1.351350e+05))
  %971 = fmul <8 x double> %966, %970
  %972 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %973 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %972, <8 x double> splat (double 6.237000e+04))
  %974 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %973, <8 x double> splat (double 1.351350e+05))
  %975 = fdiv <8 x double> %971, %974
  %976 = fadd <8 x double> %975, splat (double 1.000000e+00)
  %977 = fmul <8 x double> %879, %976
  %978 = getelementptr inbounds <8 x double>, ptr %929, i64 %955
  %979 = load <8 x double>, ptr %978, align 64, !tbaa !26
  %980 = fadd <8 x double> %979, splat (double -1.000000e+00)
  %981 = fadd <8 x double> %980, %977
  %982 = fcmp ogt <8 x double> %981, zeroinitializer
  %983 = select <8 x i1> %982, <8 x double> %981, <8 x double> zeroinitializer
  %984 = fmul <8 x double> %923, %983
  %985 = fsub <8 x double> %979, %984
  %986 = getelementptr inbounds <8 x double>, ptr %932, i64 %955
  %987 = load <8 x double>, ptr %986, align 64, !tbaa !26
  %988 = select <8 x i1> %616, <8 x double> %987, <8 x double> %985
  store <8 x double> %988, ptr %986, align 64, !tbaa !26
  %989 = getelementptr inbounds <8 x double>, ptr %930, i64 %955
  %990 = load <8 x double>, ptr %989, align 64, !tbaa !26
  %991 = fmul <8 x double> %925, %990
  %992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %984, <8 x double> %991, <8 x double> %954)
  %993 = add nsw i64 %955, 1
  %994 = load i64, ptr %119, align 16, !tbaa !21
  %995 = icmp slt i64 %993, %994
  br i1 %995, label %953, label %941, !llvm.loop !64

996:                                              ; preds = %883, %941
  %997 = add nuw nsw i64 %702, 1
  %998 = load i64, ptr %144, align 8, !tbaa !20
  %999 = icmp slt i64 %997, %998
  br i1 %999, label %701, label %1013, !llvm.loop !65

1000:                                             ; preds = %701, %1000
  %1001 = phi i64 [ 0, %701 ], [ %1011, %1000 ]
  %1002 = getelementptr inbounds nuw [12 x <8 x double>], ptr %738, i64 0, i64 %1001
  %1003 = getelementptr inbounds nuw [12 x <8 x double>], ptr %739, i64 0, i64 %1001
  %1004 = load <8 x double>, ptr %1003, align 64, !tbaa !26
  %1005 = getelementptr inbounds nuw [12 x <8 x double>], ptr %740, i64 0, i64 %1001
  %1006 = load <8 x double>, ptr %1005, align 64, !tbaa !26
  %1007 = fsub <8 x double> %1004, %1006
  %1008 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %737, <8 x double> %1007, <8 x double> %1004)
  %1009 = load <8 x double>, ptr %1002, align 64, !tbaa !26
  %1010 = select <8 x i1> %616, <8 x double> %1009, <8 x double> %1008
  store <8 x double> %1010, ptr %1002, align 64, !tbaa !26
  %1011 = add nuw nsw i64 %1001, 1
  %1012 = icmp eq i64 %1011, 11
  br i1 %1012, label %741, label %1000, !llvm.loop !66

1013:                                             ; preds = %996, %610
  %1014 = phi i64 [ %699, %610 ], [ %998, %996 ]
  %1015 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %1016 = fcmp ogt <8 x double> %1015, zeroinitializer
  %1017 = select <8 x i1> %1016, <8 x i64> %523, <8 x i64> zeroinitializer
  %1018 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1017)
  %1019 = icmp eq i64 %1018, 0
  br i1 %1019, label %1103, label %1020

1020:                                             ; preds = %1013
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1017, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1021 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %1022 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %1023 = fadd <8 x double> %1021, %1022
  store <8 x double> %1023, ptr %9, align 64, !tbaa !26
  %1024 = load ptr, ptr %162, align 8
  %1025 = load ptr, ptr %164, align 8
  %1026 = load ptr, ptr %165, align 8
  br label %1027

1027:                                             ; preds = %1095, %1020
  %1028 = phi i64 [ 0, %1020 ], [ %1096, %1095 ]
  %1029 = getelementptr inbounds nuw i64, ptr %7, i64 %1028
  %1030 = load i64, ptr %1029, align 8, !tbaa !30
  %1031 = icmp eq i64 %1030, 0
  br i1 %1031, label %1095, label %1032

1032:                                             ; preds = %1027
  %1033 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1028
  %1034 = load i64, ptr %1033, align 8, !tbaa !30
  %1035 = shl nsw i64 %1034, 1
  %1036 = getelementptr inbounds i64, ptr %1024, i64 %1035
  %1037 = load i64, ptr %1036, align 8, !tbaa !30
  %1038 = shl nuw nsw i64 %1028, 1
  %1039 = getelementptr inbounds nuw [16 x i64], ptr %163, i64 0, i64 %1038
  %1040 = getelementptr inbounds i64, ptr %1026, i64 %1035
  %1041 = load i64, ptr %1040, align 8, !tbaa !30
  %1042 = shl nsw i64 %1041, 4
  %1043 = getelementptr inbounds i8, ptr %1025, i64 %1042
  %1044 = getelementptr inbounds nuw double, ptr %9, i64 %1028
  %1045 = load double, ptr %1044, align 8, !tbaa !40
  %1046 = load i64, ptr %1039, align 8, !tbaa !30
  %1047 = getelementptr i8, ptr %1043, i64 -16
  %1048 = icmp sgt i64 %1046, 0
  br i1 %1048, label %1049, label %1058

1049:                                             ; preds = %1032, %1055
  %1050 = phi i64 [ %1056, %1055 ], [ %1046, %1032 ]
  %1051 = shl i64 %1050, 4
  %1052 = getelementptr i8, ptr %1047, i64 %1051
  %1053 = load double, ptr %1052, align 8, !tbaa !40
  %1054 = fcmp ugt double %1045, %1053
  br i1 %1054, label %1058, label %1055

1055:                                             ; preds = %1049
  %1056 = add nsw i64 %1050, -1
  store i64 %1056, ptr %1039, align 8, !tbaa !30
  %1057 = icmp sgt i64 %1050, 1
  br i1 %1057, label %1049, label %1058, !llvm.loop !67

1058:                                             ; preds = %1055, %1049, %1032
  %1059 = phi i64 [ %1046, %1032 ], [ 0, %1055 ], [ %1050, %1049 ]
  %1060 = icmp slt i64 %1059, %1037
  br i1 %1060, label %1061, label %1070

1061:                                             ; preds = %1058, %1067
  %1062 = phi i64 [ %1068, %1067 ], [ %1059, %1058 ]
  %1063 = shl nsw i64 %1062, 4
  %1064 = getelementptr inbounds i8, ptr %1043, i64 %1063
  %1065 = load double, ptr %1064, align 8, !tbaa !40
  %1066 = fcmp ule double %1045, %1065
  br i1 %1066, label %1075, label %1067

1067:                                             ; preds = %1061
  %1068 = add i64 %1062, 1
  store i64 %1068, ptr %1039, align 8, !tbaa !30
  %1069 = icmp eq i64 %1068, %1037
  br i1 %1069, label %1070, label %1061, !llvm.loop !68

1070:                                             ; preds = %1067, %1058
  %1071 = shl i64 %1037, 4
  %1072 = getelementptr i8, ptr %1043, i64 %1071
  %1073 = getelementptr i8, ptr %1072, i64 -8
  %1074 = load double, ptr %1073, align 8, !tbaa !40
  br label %1092

1075:                                             ; preds = %1061
  %1076 = shl nsw i64 %1062, 1
  %1077 = or disjoint i64 %1076, 1
  %1078 = getelementptr inbounds double, ptr %1043, i64 %1077
  %1079 = load double, ptr %1078, align 8, !tbaa !40
  %1080 = icmp sgt i64 %1062, 0
  br i1 %1080, label %1081, label %1092

1081:                                             ; preds = %1075
  %1082 = getelementptr inbounds nuw i8, ptr %1043, i64 %1063
  %1083 = getelementptr i8, ptr %1082, i64 -8
  %1084 = load double, ptr %1083, align 8, !tbaa !40
  %1085 = getelementptr i8, ptr %1082, i64 -16
  %1086 = load double, ptr %1085, align 8, !tbaa !40
  %1087 = fsub double %1045, %1086
  %1088 = fsub double %1065, %1086
  %1089 = fdiv double %1087, %1088
  %1090 = fsub double %1079, %1084
  %1091 = tail call double @llvm.fmuladd.f64(double %1089, double %1090, double %1084)
  br label %1092

1092:                                             ; preds = %1081, %1075, %1070
  %1093 = phi double [ %1091, %1081 ], [ %1079, %1075 ], [ %1074, %1070 ]
  %1094 = getelementptr inbounds nuw double, ptr %8, i64 %1028
  store double %1093, ptr %1094, align 8, !tbaa !40
  br label %1095

1095:                                             ; preds = %1092, %1027
  %1096 = add nuw nsw i64 %1028, 1
  %1097 = icmp eq i64 %1096, 8
  br i1 %1097, label %1098, label %1027, !llvm.loop !69

1098:                                             ; preds = %1095
  %1099 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1100 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %1101 = icmp eq <8 x i64> %1017, zeroinitializer
  %1102 = select <8 x i1> %1101, <8 x double> %1100, <8 x double> %1099
  store <8 x double> %1102, ptr %151, align 64, !tbaa !26
  br label %1103

1103:                                             ; preds = %1013, %1098, %521
  %1104 = phi i64 [ %1014, %1013 ], [ %1014, %1098 ], [ %526, %521 ]
  %1105 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %1106 = icmp eq <8 x i64> %523, zeroinitializer
  %1107 = select <8 x i1> %1106, <8 x double> %1105, <8 x double> zeroinitializer
  store <8 x double> %1107, ptr %166, align 64, !tbaa !26
  %1108 = icmp sgt i64 %1104, 0
  br i1 %1108, label %1114, label %1109

1109:                                             ; preds = %1103
  %1110 = load <8 x double>, ptr %170, align 64, !tbaa !26
  br label %1821

1111:                                             ; preds = %1813
  %1112 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %1113 = icmp sgt i64 %1817, 0
  br i1 %1113, label %1827, label %1821

1114:                                             ; preds = %1103, %1813
  %1115 = phi i64 [ %1816, %1813 ], [ 0, %1103 ]
  %1116 = load ptr, ptr %129, align 8, !tbaa !28
  %1117 = getelementptr inbounds nuw %struct.Piece, ptr %1116, i64 %1115
  %1118 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %1119 = getelementptr inbounds nuw i8, ptr %1117, i64 6400
  %1120 = load <8 x double>, ptr %1119, align 64, !tbaa !26
  %1121 = fsub <8 x double> %1118, %1120
  %1122 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1121)
  %1123 = getelementptr inbounds nuw i8, ptr %1117, i64 2176
  %1124 = load <8 x double>, ptr %1123, align 64, !tbaa !26
  %1125 = fcmp ogt <8 x double> %1124, splat (double 1.000000e-09)
  %1126 = select <8 x i1> %1125, <8 x double> %1124, <8 x double> splat (double 1.000000e-09)
  %1127 = fdiv <8 x double> %1122, %1126
  %1128 = getelementptr inbounds nuw i8, ptr %1117, i64 1024
  %1129 = load <8 x double>, ptr %1128, align 64, !tbaa !26
  %1130 = fcmp ule <8 x double> %1124, zeroinitializer
  %1131 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1127)
  %1132 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1131)
  %1133 = select <8 x i1> %1130, <8 x double> splat (double 1.000000e+00), <8 x double> %1132
  %1134 = fmul <8 x double> %1129, %1133
  %1135 = getelementptr inbounds nuw i8, ptr %1117, i64 1088
  %1136 = load <8 x double>, ptr %1135, align 64, !tbaa !26
  %1137 = getelementptr inbounds nuw i8, ptr %1117, i64 5632
  %1138 = load <8 x double>, ptr %1137, align 64, !tbaa !26
  %1139 = getelementptr inbounds nuw i8, ptr %1117, i64 5696
  %1140 = load <8 x double>, ptr %1139, align 64, !tbaa !26
  %1141 = fadd <8 x double> %1138, %1140
  %1142 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1136, <8 x double> %1141, <8 x double> %1134)
  %1143 = getelementptr inbounds nuw i8, ptr %1117, i64 1152
  %1144 = load <8 x double>, ptr %1143, align 64, !tbaa !26
  %1145 = fcmp olt <8 x double> %1142, %1144
  %1146 = select <8 x i1> %1145, <8 x double> %1142, <8 x double> %1144
  %1147 = getelementptr inbounds nuw i8, ptr %1117, i64 5312
  %1148 = load <8 x double>, ptr %1147, align 64, !tbaa !26
  %1149 = getelementptr inbounds nuw i8, ptr %1117, i64 3968
  %1150 = load <8 x double>, ptr %1149, align 64, !tbaa !26
  %1151 = getelementptr inbounds nuw i8, ptr %1117, i64 5376
  %1152 = load <8 x double>, ptr %1151, align 64, !tbaa !26
  %1153 = getelementptr inbounds nuw i8, ptr %1117, i64 4736
  %1154 = load <8 x double>, ptr %1153, align 64, !tbaa !26
  %1155 = fmul <8 x double> %1152, %1154
  %1156 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1148, <8 x double> %1150, <8 x double> %1155)
  %1157 = getelementptr inbounds nuw i8, ptr %1117, i64 1216
  %1158 = load <8 x double>, ptr %1157, align 64, !tbaa !26
  %1159 = fneg <8 x double> %1158
  %1160 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1159, <8 x double> %1156, <8 x double> %1146)
  %1161 = getelementptr inbounds nuw i8, ptr %1117, i64 5248
  %1162 = load <8 x double>, ptr %1161, align 64, !tbaa !26
  %1163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1158, <8 x double> %1162, <8 x double> splat (double 1.000000e+00))
  %1164 = fdiv <8 x double> %1160, %1163
  %1165 = getelementptr inbounds nuw i8, ptr %1117, i64 7488
  %1166 = load <8 x i64>, ptr %1165, align 64, !tbaa !26
  %1167 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %1168 = icmp eq <8 x i64> %1166, zeroinitializer
  %1169 = select <8 x i1> %1168, <8 x double> %1118, <8 x double> %1167
  %1170 = getelementptr inbounds nuw i8, ptr %1117, i64 5504
  store <8 x double> %1169, ptr %1170, align 64, !tbaa !26
  %1171 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %1172 = select <8 x i1> %1168, <8 x double> %1164, <8 x double> %1171
  %1173 = getelementptr inbounds nuw i8, ptr %1117, i64 3200
  store <8 x double> %1172, ptr %1173, align 64, !tbaa !26
  %1174 = getelementptr inbounds nuw i8, ptr %1117, i64 896
  %1175 = load <8 x double>, ptr %1174, align 64, !tbaa !26
  %1176 = fcmp ule <8 x double> %1175, zeroinitializer
  %1177 = getelementptr inbounds nuw i8, ptr %1117, i64 2944
  %1178 = getelementptr inbounds nuw i8, ptr %1117, i64 3072
  %1179 = load <8 x double>, ptr %1178, align 64, !tbaa !26
  %1180 = fcmp ogt <8 x double> %1175, splat (double 1.000000e-30)
  %1181 = select <8 x i1> %1180, <8 x double> %1175, <8 x double> splat (double 1.000000e-30)
  %1182 = fdiv <8 x double> %1179, %1181
  %1183 = fcmp ogt <8 x double> %1182, zeroinitializer
  %1184 = select <8 x i1> %1183, <8 x double> %1182, <8 x double> zeroinitializer
  %1185 = fcmp olt <8 x double> %1184, splat (double 1.000000e+00)
  %1186 = select <8 x i1> %1185, <8 x double> %1184, <8 x double> splat (double 1.000000e+00)
  %1187 = select <8 x i1> %1176, <8 x double> zeroinitializer, <8 x double> %1186
  %1188 = getelementptr inbounds nuw i8, ptr %1117, i64 2112
  %1189 = load <8 x double>, ptr %1188, align 64, !tbaa !26
  %1190 = fmul <8 x double> %1187, splat (double 4.180000e+03)
  %1191 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1190, <8 x double> %1175, <8 x double> %1189)
  %1192 = getelementptr inbounds nuw i8, ptr %1117, i64 4288
  %1193 = load <8 x double>, ptr %1192, align 64, !tbaa !26
  %1194 = getelementptr inbounds nuw i8, ptr %1117, i64 5056
  %1195 = load <8 x double>, ptr %1194, align 64, !tbaa !26
  %1196 = fmul <8 x double> %1152, %1195
  %1197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1148, <8 x double> %1193, <8 x double> %1196)
  %1198 = getelementptr inbounds nuw i8, ptr %1117, i64 7360
  %1199 = load <8 x i64>, ptr %1198, align 64, !tbaa !26
  %1200 = fcmp ule <8 x double> %1189, zeroinitializer
  %1201 = getelementptr inbounds nuw i8, ptr %1117, i64 6912
  store <8 x double> %1187, ptr %1201, align 64, !tbaa !26
  %1202 = fmul <8 x double> %1162, %1191
  %1203 = icmp eq <8 x i64> %1199, splat (i64 -1)
  %1204 = select <8 x i1> %1200, <8 x i1> splat (i1 true), <8 x i1> %1203
  %1205 = select <8 x i1> %1204, <8 x double> zeroinitializer, <8 x double> %1202
  %1206 = getelementptr inbounds nuw i8, ptr %1117, i64 6976
  store <8 x double> %1205, ptr %1206, align 64, !tbaa !26
  %1207 = fmul <8 x double> %1197, %1191
  %1208 = select <8 x i1> %1204, <8 x double> zeroinitializer, <8 x double> %1207
  %1209 = getelementptr inbounds nuw i8, ptr %1117, i64 7040
  store <8 x double> %1208, ptr %1209, align 64, !tbaa !26
  %1210 = load <8 x double>, ptr %1117, align 64, !tbaa !26
  %1211 = load <8 x double>, ptr %1177, align 64, !tbaa !26
  %1212 = fsub <8 x double> %1210, %1211
  %1213 = fsub <8 x double> splat (double 1.000000e+00), %1187
  %1214 = getelementptr inbounds nuw i8, ptr %1117, i64 1920
  %1215 = load <8 x double>, ptr %1214, align 64, !tbaa !26
  %1216 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1213, <8 x double> %1215, <8 x double> %1212)
  %1217 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %1218 = fdiv <8 x double> splat (double 1.000000e+00), %1217
  %1219 = getelementptr inbounds nuw i8, ptr %1117, i64 2240
  %1220 = load <8 x double>, ptr %1219, align 64, !tbaa !26
  %1221 = fcmp ogt <8 x double> %1220, splat (double 1.000000e-30)
  %1222 = select <8 x i1> %1221, <8 x double> %1220, <8 x double> splat (double 1.000000e-30)
  %1223 = fdiv <8 x double> %1216, %1222
  %1224 = fadd <8 x double> %1218, %1223
  %1225 = getelementptr inbounds nuw i8, ptr %1117, i64 7104
  store <8 x double> %1224, ptr %1225, align 64, !tbaa !26
  %1226 = getelementptr inbounds nuw i8, ptr %1117, i64 6784
  store <8 x double> %1138, ptr %1226, align 64, !tbaa !26
  %1227 = getelementptr inbounds nuw i8, ptr %1117, i64 2560
  %1228 = load <8 x double>, ptr %1227, align 64, !tbaa !26
  %1229 = getelementptr inbounds nuw i8, ptr %1117, i64 2624
  %1230 = load <8 x double>, ptr %1229, align 64, !tbaa !26
  %1231 = getelementptr inbounds nuw i8, ptr %1117, i64 2688
  %1232 = load <8 x double>, ptr %1231, align 64, !tbaa !26
  %1233 = getelementptr inbounds nuw i8, ptr %1117, i64 2752
  %1234 = load <8 x double>, ptr %1233, align 64, !tbaa !26
  %1235 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1234, <8 x double> %1232)
  %1236 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1235, <8 x double> %1230)
  %1237 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1236, <8 x double> %1228)
  %1238 = getelementptr inbounds nuw i8, ptr %1117, i64 3648
  store <8 x double> %1237, ptr %1238, align 64, !tbaa !26
  %1239 = getelementptr inbounds nuw i8, ptr %1117, i64 4416
  %1240 = load <8 x double>, ptr %1239, align 64, !tbaa !26
  %1241 = fmul <8 x double> %1148, %1240
  %1242 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1162, <8 x double> %1237, <8 x double> %1241)
  %1243 = getelementptr inbounds nuw i8, ptr %1117, i64 5184
  %1244 = load <8 x double>, ptr %1243, align 64, !tbaa !26
  %1245 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1152, <8 x double> %1244, <8 x double> %1242)
  %1246 = fmul <8 x double> %1245, splat (double 5.000000e-01)
  %1247 = getelementptr inbounds nuw i8, ptr %1117, i64 6720
  store <8 x double> %1246, ptr %1247, align 64, !tbaa !26
  %1248 = getelementptr inbounds nuw i8, ptr %1117, i64 2304
  %1249 = load <8 x double>, ptr %1248, align 64, !tbaa !26
  %1250 = getelementptr inbounds nuw i8, ptr %1117, i64 2368
  %1251 = load <8 x double>, ptr %1250, align 64, !tbaa !26
  %1252 = getelementptr inbounds nuw i8, ptr %1117, i64 2432
  %1253 = load <8 x double>, ptr %1252, align 64, !tbaa !26
  %1254 = getelementptr inbounds nuw i8, ptr %1117, i64 2496
  %1255 = load <8 x double>, ptr %1254, align 64, !tbaa !26
  %1256 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1255, <8 x double> %1253)
  %1257 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1256, <8 x double> %1251)
  %1258 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1257, <8 x double> %1249)
  %1259 = getelementptr inbounds nuw i8, ptr %1117, i64 6656
  store <8 x double> %1258, ptr %1259, align 64, !tbaa !26
  %1260 = getelementptr inbounds nuw i8, ptr %1117, i64 7552
  %1261 = load i64, ptr %1260, align 64, !tbaa !31
  %1262 = icmp eq i64 %1261, 0
  br i1 %1262, label %1263, label %1275

1263:                                             ; preds = %1114
  %1264 = fdiv <8 x double> %1258, %1211
  %1265 = load i64, ptr %119, align 16, !tbaa !21
  %1266 = getelementptr inbounds nuw i8, ptr %1117, i64 7672
  %1267 = load ptr, ptr %1266, align 8, !tbaa !35
  %1268 = getelementptr inbounds <8 x double>, ptr %1267, i64 %1265
  %1269 = load <8 x double>, ptr %1268, align 64, !tbaa !26
  %1270 = fmul <8 x double> %1264, %1269
  %1271 = getelementptr inbounds nuw i8, ptr %1117, i64 64
  %1272 = load <8 x double>, ptr %1271, align 64, !tbaa !26
  %1273 = fsub <8 x double> %1211, %1272
  %1274 = fdiv <8 x double> splat (double 1.000000e+00), %1273
  br label %1298

1275:                                             ; preds = %1114
  %1276 = getelementptr inbounds nuw i8, ptr %1117, i64 64
  %1277 = load <8 x double>, ptr %1276, align 64, !tbaa !26
  %1278 = fsub <8 x double> %1211, %1277
  %1279 = fdiv <8 x double> splat (double 1.000000e+00), %1278
  %1280 = load i64, ptr %119, align 16, !tbaa !21
  %1281 = getelementptr inbounds nuw i8, ptr %1117, i64 7672
  %1282 = load ptr, ptr %1281, align 8, !tbaa !35
  %1283 = shl nsw i64 %1280, 8
  %1284 = getelementptr inbounds i8, ptr %1282, i64 %1283
  %1285 = load <8 x double>, ptr %1284, align 64, !tbaa !26
  %1286 = getelementptr inbounds nuw i8, ptr %1284, i64 64
  %1287 = load <8 x double>, ptr %1286, align 64, !tbaa !26
  %1288 = getelementptr inbounds nuw i8, ptr %1284, i64 128
  %1289 = load <8 x double>, ptr %1288, align 64, !tbaa !26
  %1290 = getelementptr inbounds nuw i8, ptr %1284, i64 192
  %1291 = load <8 x double>, ptr %1290, align 64, !tbaa !26
  %1292 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1291, <8 x double> %1289)
  %1293 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1292, <8 x double> %1287)
  %1294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1293, <8 x double> %1285)
  %1295 = icmp sgt i64 %1280, %1261
  %1296 = fmul <8 x double> %1279, %1294
  %1297 = select i1 %1295, <8 x double> %1296, <8 x double> %1294
  br label %1298

1298:                                             ; preds = %1263, %1275
  %1299 = phi <8 x double> [ %1274, %1263 ], [ %1279, %1275 ]
  %1300 = phi <8 x double> [ %1273, %1263 ], [ %1278, %1275 ]
  %1301 = phi <8 x double> [ %1270, %1263 ], [ %1297, %1275 ]
  %1302 = getelementptr inbounds nuw i8, ptr %1117, i64 5568
  %1303 = load <8 x double>, ptr %1302, align 64, !tbaa !26
  %1304 = fcmp ogt <8 x double> %1212, splat (double 0x3D719799812DEA11)
  %1305 = select <8 x i1> %1304, <8 x double> %1212, <8 x double> splat (double 0x3D719799812DEA11)
  %1306 = getelementptr inbounds nuw i8, ptr %1117, i64 6528
  store <8 x double> %1299, ptr %1306, align 64, !tbaa !26
  %1307 = getelementptr inbounds nuw i8, ptr %1117, i64 704
  %1308 = load <8 x double>, ptr %1307, align 64, !tbaa !26
  %1309 = fdiv <8 x double> %1308, %1305
  %1310 = getelementptr inbounds nuw i8, ptr %1117, i64 6592
  store <8 x double> %1309, ptr %1310, align 64, !tbaa !26
  %1311 = getelementptr inbounds nuw i8, ptr %1117, i64 7560
  %1312 = load ptr, ptr %1311, align 8, !tbaa !56
  %1313 = load i64, ptr %119, align 16, !tbaa !21
  %1314 = getelementptr <8 x double>, ptr %1312, i64 %1313
  %1315 = getelementptr i8, ptr %1314, i64 -64
  %1316 = load <8 x double>, ptr %1315, align 64, !tbaa !26
  %1317 = fadd <8 x double> %1303, %1316
  %1318 = fmul <8 x double> %1317, splat (double 5.000000e-01)
  %1319 = getelementptr inbounds nuw i8, ptr %1117, i64 192
  %1320 = load <8 x double>, ptr %1319, align 64, !tbaa !26
  %1321 = getelementptr inbounds nuw i8, ptr %1117, i64 256
  %1322 = load <8 x double>, ptr %1321, align 64, !tbaa !26
  %1323 = getelementptr inbounds nuw i8, ptr %1117, i64 320
  %1324 = load <8 x double>, ptr %1323, align 64, !tbaa !26
  %1325 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1318, <8 x double> %1324, <8 x double> %1322)
  %1326 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1318, <8 x double> %1325, <8 x double> %1320)
  %1327 = fmul <8 x double> %1301, %1326
  %1328 = fmul <8 x double> %1187, %1327
  %1329 = getelementptr inbounds nuw i8, ptr %1117, i64 2048
  %1330 = load <8 x double>, ptr %1329, align 64, !tbaa !26
  %1331 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1328, <8 x double> %1330, <8 x double> splat (double 1.000000e+00))
  %1332 = fdiv <8 x double> splat (double 1.000000e+00), %1331
  %1333 = icmp eq <8 x i64> %1199, zeroinitializer
  %1334 = select <8 x i1> %1333, <8 x double> %1332, <8 x double> splat (double 1.000000e+00)
  %1335 = getelementptr inbounds nuw i8, ptr %1117, i64 6848
  store <8 x double> %1334, ptr %1335, align 64, !tbaa !26
  %1336 = fmul <8 x double> %1327, %1334
  %1337 = getelementptr inbounds nuw i8, ptr %1117, i64 6016
  store <8 x double> %1336, ptr %1337, align 64, !tbaa !26
  %1338 = fmul <8 x double> %1246, splat (double 2.000000e+00)
  %1339 = getelementptr inbounds nuw i8, ptr %1117, i64 384
  %1340 = load <8 x double>, ptr %1339, align 64, !tbaa !26
  %1341 = getelementptr inbounds nuw i8, ptr %1117, i64 448
  %1342 = load <8 x double>, ptr %1341, align 64, !tbaa !26
  %1343 = getelementptr inbounds nuw i8, ptr %1117, i64 512
  %1344 = load <8 x double>, ptr %1343, align 64, !tbaa !26
  %1345 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1303, <8 x double> %1344, <8 x double> %1342)
  %1346 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1303, <8 x double> %1345, <8 x double> %1340)
  %1347 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1338, <8 x double> %1346, <8 x double> %1336)
  %1348 = getelementptr inbounds nuw i8, ptr %1117, i64 6144
  store <8 x double> %1347, ptr %1348, align 64, !tbaa !26
  %1349 = fmul <8 x double> %1172, %1213
  %1350 = getelementptr inbounds nuw i8, ptr %1117, i64 1984
  %1351 = load <8 x double>, ptr %1350, align 64, !tbaa !26
  %1352 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1349, <8 x double> %1351, <8 x double> splat (double 1.000000e+00))
  %1353 = fdiv <8 x double> %1172, %1352
  %1354 = load i64, ptr %120, align 8, !tbaa !22
  %1355 = sitofp i64 %1354 to double
  %1356 = fmul double %1355, 2.000000e+00
  %1357 = insertelement <8 x double> poison, double %1356, i64 0
  %1358 = shufflevector <8 x double> %1357, <8 x double> poison, <8 x i32> zeroinitializer
  %1359 = fmul <8 x double> %1309, %1358
  %1360 = fadd <8 x double> %1353, %1359
  %1361 = fdiv <8 x double> %1353, %1360
  %1362 = fmul <8 x double> %1258, %1359
  %1363 = select <8 x i1> %1333, <8 x double> %1353, <8 x double> %1362
  %1364 = getelementptr inbounds nuw i8, ptr %1117, i64 6080
  store <8 x double> %1363, ptr %1364, align 64, !tbaa !26
  %1365 = fmul <8 x double> %1359, %1361
  %1366 = select <8 x i1> %1333, <8 x double> %1353, <8 x double> %1365
  %1367 = getelementptr inbounds nuw i8, ptr %1117, i64 6208
  store <8 x double> %1366, ptr %1367, align 64, !tbaa !26
  %1368 = select <8 x i1> %1333, <8 x double> splat (double 1.000000e+00), <8 x double> %1361
  %1369 = getelementptr inbounds nuw i8, ptr %1117, i64 6272
  store <8 x double> %1368, ptr %1369, align 64, !tbaa !26
  br i1 %1262, label %1531, label %1370

1370:                                             ; preds = %1298
  %1371 = getelementptr inbounds nuw i8, ptr %1117, i64 576
  %1372 = load <8 x double>, ptr %1371, align 64, !tbaa !26
  %1373 = getelementptr inbounds nuw i8, ptr %1117, i64 640
  %1374 = load <8 x double>, ptr %1373, align 64, !tbaa !26
  %1375 = getelementptr inbounds nuw i8, ptr %1117, i64 1536
  %1376 = load <8 x double>, ptr %1375, align 64, !tbaa !26
  %1377 = load i64, ptr %119, align 16, !tbaa !21
  %1378 = fsub <8 x double> %1237, %1376
  %1379 = fmul <8 x double> %1342, splat (double 5.000000e-01)
  %1380 = fmul <8 x double> %1344, splat (double 0x3FE5555555555555)
  %1381 = getelementptr inbounds nuw i8, ptr %1117, i64 7648
  %1382 = load ptr, ptr %1381, align 32, !tbaa !70
  %1383 = getelementptr inbounds nuw i8, ptr %1117, i64 7656
  %1384 = load ptr, ptr %1383, align 8, !tbaa !46
  %1385 = getelementptr inbounds nuw i8, ptr %1117, i64 7584
  %1386 = load ptr, ptr %1385, align 32, !tbaa !57
  %1387 = getelementptr inbounds nuw i8, ptr %1117, i64 7624
  %1388 = load ptr, ptr %1387, align 8, !tbaa !71
  %1389 = getelementptr inbounds nuw i8, ptr %1117, i64 7632
  %1390 = load ptr, ptr %1389, align 16, !tbaa !72
  %1391 = getelementptr inbounds nuw i8, ptr %1117, i64 7640
  %1392 = load ptr, ptr %1391, align 8, !tbaa !73
  %1393 = getelementptr inbounds nuw i8, ptr %1117, i64 7608
  %1394 = load ptr, ptr %1393, align 8, !tbaa !74
  %1395 = getelementptr inbounds nuw i8, ptr %1117, i64 7616
  %1396 = load ptr, ptr %1395, align 64, !tbaa !75
  %1397 = icmp sgt i64 %1377, 0
  br i1 %1397, label %1398, label %1644

1398:                                             ; preds = %1370
  %1399 = load <8 x double>, ptr %1312, align 64, !tbaa !26
  %1400 = getelementptr inbounds nuw i8, ptr %1117, i64 2880
  %1401 = load <8 x double>, ptr %1400, align 64, !tbaa !26
  %1402 = getelementptr inbounds nuw i8, ptr %1117, i64 2816
  %1403 = load <8 x double>, ptr %1402, align 64, !tbaa !26
  %1404 = fmul <8 x double> %1246, splat (double -2.000000e+00)
  %1405 = fmul <8 x double> %1404, %1303
  %1406 = fmul <8 x double> %1303, %1405
  %1407 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1303, <8 x double> %1380, <8 x double> %1379)
  %1408 = fmul <8 x double> %1406, %1407
  %1409 = getelementptr inbounds nuw i8, ptr %1117, i64 7672
  %1410 = fmul <8 x double> %1300, %1401
  %1411 = fdiv <8 x double> %1403, %1372
  br label %1412

1412:                                             ; preds = %1398, %1496
  %1413 = phi <8 x double> [ %1399, %1398 ], [ %1500, %1496 ]
  %1414 = phi <8 x double> [ zeroinitializer, %1398 ], [ %1497, %1496 ]
  %1415 = phi <8 x double> [ zeroinitializer, %1398 ], [ %1498, %1496 ]
  %1416 = phi <8 x double> [ zeroinitializer, %1398 ], [ %1499, %1496 ]
  %1417 = phi <8 x double> [ zeroinitializer, %1398 ], [ %1526, %1496 ]
  %1418 = phi <8 x double> [ zeroinitializer, %1398 ], [ %1528, %1496 ]
  %1419 = phi <8 x double> [ %1374, %1398 ], [ %1501, %1496 ]
  %1420 = phi i64 [ 0, %1398 ], [ %1422, %1496 ]
  %1421 = phi <8 x double> [ zeroinitializer, %1398 ], [ %1502, %1496 ]
  %1422 = add nuw nsw i64 %1420, 1
  %1423 = icmp slt i64 %1422, %1377
  br i1 %1423, label %1424, label %1493

1424:                                             ; preds = %1412
  %1425 = getelementptr inbounds nuw <8 x double>, ptr %1312, i64 %1422
  %1426 = load <8 x double>, ptr %1425, align 64, !tbaa !26
  %1427 = icmp slt i64 %1422, %1261
  br i1 %1427, label %1435, label %1428

1428:                                             ; preds = %1424
  %1429 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1426, <8 x double> %1344, <8 x double> %1342)
  %1430 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1426, <8 x double> %1429, <8 x double> %1340)
  %1431 = fneg <8 x double> %1426
  %1432 = fmul <8 x double> %1426, %1431
  %1433 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1426, <8 x double> %1380, <8 x double> %1379)
  %1434 = fmul <8 x double> %1432, %1433
  br label %1435

1435:                                             ; preds = %1424, %1428
  %1436 = phi <8 x double> [ %1430, %1428 ], [ %1374, %1424 ]
  %1437 = phi <8 x double> [ %1434, %1428 ], [ zeroinitializer, %1424 ]
  %1438 = load i64, ptr %1260, align 64, !tbaa !31
  %1439 = icmp eq i64 %1438, 0
  %1440 = load ptr, ptr %1409, align 8, !tbaa !35
  br i1 %1439, label %1441, label %1445

1441:                                             ; preds = %1435
  %1442 = getelementptr inbounds nuw <8 x double>, ptr %1440, i64 %1422
  %1443 = load <8 x double>, ptr %1442, align 64, !tbaa !26
  %1444 = fmul <8 x double> %1299, %1443
  br label %1461

1445:                                             ; preds = %1435
  %1446 = shl nsw i64 %1422, 8
  %1447 = getelementptr inbounds nuw i8, ptr %1440, i64 %1446
  %1448 = load <8 x double>, ptr %1447, align 64, !tbaa !26
  %1449 = getelementptr inbounds nuw i8, ptr %1447, i64 64
  %1450 = load <8 x double>, ptr %1449, align 64, !tbaa !26
  %1451 = getelementptr inbounds nuw i8, ptr %1447, i64 128
  %1452 = load <8 x double>, ptr %1451, align 64, !tbaa !26
  %1453 = getelementptr inbounds nuw i8, ptr %1447, i64 192
  %1454 = load <8 x double>, ptr %1453, align 64, !tbaa !26
  %1455 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1454, <8 x double> %1452)
  %1456 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1455, <8 x double> %1450)
  %1457 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1211, <8 x double> %1456, <8 x double> %1448)
  %1458 = icmp slt i64 %1420, %1438
  %1459 = fmul <8 x double> %1299, %1457
  %1460 = select i1 %1458, <8 x double> %1457, <8 x double> %1459
  br label %1461

1461:                                             ; preds = %1445, %1441
  %1462 = phi <8 x double> [ %1444, %1441 ], [ %1460, %1445 ]
  %1463 = icmp slt i64 %1420, %1438
  br i1 %1463, label %1470, label %1464

1464:                                             ; preds = %1461
  %1465 = fadd <8 x double> %1413, %1426
  %1466 = fmul <8 x double> %1465, splat (double 5.000000e-01)
  %1467 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1466, <8 x double> %1324, <8 x double> %1322)
  %1468 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1466, <8 x double> %1467, <8 x double> %1320)
  %1469 = fmul <8 x double> %1468, %1462
  br label %1480

1470:                                             ; preds = %1461
  %1471 = icmp slt i64 %1422, %1438
  br i1 %1471, label %1472, label %1474

1472:                                             ; preds = %1470
  %1473 = fmul <8 x double> %1372, %1462
  br label %1480

1474:                                             ; preds = %1470
  %1475 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1426, <8 x double> %1324, <8 x double> %1322)
  %1476 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1426, <8 x double> %1475, <8 x double> %1320)
  %1477 = fdiv <8 x double> %1410, %1476
  %1478 = fadd <8 x double> %1411, %1477
  %1479 = fdiv <8 x double> %1462, %1478
  br label %1480

1480:                                             ; preds = %1464, %1472, %1474
  %1481 = phi <8 x double> [ %1469, %1464 ], [ %1473, %1472 ], [ %1479, %1474 ]
  br i1 %1427, label %1486, label %1482

1482:                                             ; preds = %1480
  %1483 = getelementptr inbounds nuw <8 x double>, ptr %1382, i64 %1422
  %1484 = load <8 x double>, ptr %1483, align 64, !tbaa !26
  %1485 = fmul <8 x double> %1246, %1484
  br label %1486

1486:                                             ; preds = %1480, %1482
  %1487 = phi <8 x double> [ %1485, %1482 ], [ zeroinitializer, %1480 ]
  %1488 = fneg <8 x double> %1487
  %1489 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1488, <8 x double> %1419, <8 x double> %1481)
  %1490 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1487, <8 x double> %1436, <8 x double> %1481)
  %1491 = fadd <8 x double> %1421, %1437
  %1492 = fmul <8 x double> %1491, %1487
  br label %1496

1493:                                             ; preds = %1412
  %1494 = load <8 x double>, ptr %1337, align 64, !tbaa !26
  %1495 = load <8 x double>, ptr %1348, align 64, !tbaa !26
  br label %1496

1496:                                             ; preds = %1493, %1486
  %1497 = phi <8 x double> [ %1489, %1486 ], [ %1494, %1493 ]
  %1498 = phi <8 x double> [ %1490, %1486 ], [ %1495, %1493 ]
  %1499 = phi <8 x double> [ %1492, %1486 ], [ %1408, %1493 ]
  %1500 = phi <8 x double> [ %1426, %1486 ], [ %1413, %1493 ]
  %1501 = phi <8 x double> [ %1436, %1486 ], [ %1419, %1493 ]
  %1502 = phi <8 x double> [ %1437, %1486 ], [ %1421, %1493 ]
  %1503 = getelementptr inbounds nuw <8 x double>, ptr %1384, i64 %1420
  %1504 = load <8 x double>, ptr %1503, align 64, !tbaa !26
  %1505 = icmp slt i64 %1420, %1261
  %1506 = select i1 %1505, <8 x double> %1376, <8 x double> %1378
  %1507 = fmul <8 x double> %1162, %1506
  %1508 = fmul <8 x double> %1507, %1504
  %1509 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1508, <8 x double> %1419, <8 x double> %1497)
  %1510 = fadd <8 x double> %1415, %1509
  %1511 = fsub <8 x double> %1499, %1416
  %1512 = fneg <8 x double> %1508
  %1513 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1512, <8 x double> %1421, <8 x double> %1511)
  %1514 = getelementptr inbounds nuw <8 x double>, ptr %1386, i64 %1420
  %1515 = load <8 x double>, ptr %1514, align 64, !tbaa !26
  %1516 = fsub <8 x double> %1513, %1515
  %1517 = fneg <8 x double> %1414
  %1518 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1517, <8 x double> %1418, <8 x double> %1510)
  %1519 = fdiv <8 x double> splat (double 1.000000e+00), %1518
  %1520 = getelementptr inbounds nuw <8 x double>, ptr %1388, i64 %1420
  store <8 x double> %1516, ptr %1520, align 64, !tbaa !26
  %1521 = getelementptr inbounds nuw <8 x double>, ptr %1390, i64 %1420
  store <8 x double> %1414, ptr %1521, align 64, !tbaa !26
  %1522 = fadd <8 x double> %1414, %1498
  %1523 = fsub <8 x double> %1522, %1510
  %1524 = getelementptr inbounds nuw <8 x double>, ptr %1392, i64 %1420
  store <8 x double> %1523, ptr %1524, align 64, !tbaa !26
  %1525 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1414, <8 x double> %1417, <8 x double> %1516)
  %1526 = fmul <8 x double> %1525, %1519
  %1527 = getelementptr inbounds nuw <8 x double>, ptr %1394, i64 %1420
  store <8 x double> %1526, ptr %1527, align 64, !tbaa !26
  %1528 = fmul <8 x double> %1498, %1519
  %1529 = getelementptr inbounds nuw <8 x double>, ptr %1396, i64 %1420
  store <8 x double> %1528, ptr %1529, align 64, !tbaa !26
  %1530 = icmp eq i64 %1422, %1377
  br i1 %1530, label %1644, label %1412, !llvm.loop !76

1531:                                             ; preds = %1298
  %1532 = getelementptr inbounds nuw i8, ptr %1117, i64 1536
  %1533 = load <8 x double>, ptr %1532, align 64, !tbaa !26
  %1534 = load i64, ptr %119, align 16, !tbaa !21
  %1535 = fdiv <8 x double> %1258, %1211
  %1536 = fsub <8 x double> %1237, %1533
  %1537 = fmul <8 x double> %1162, %1536
  %1538 = fmul <8 x double> %1342, splat (double 5.000000e-01)
  %1539 = fmul <8 x double> %1344, splat (double 0x3FE5555555555555)
  %1540 = getelementptr inbounds nuw i8, ptr %1117, i64 7648
  %1541 = load ptr, ptr %1540, align 32, !tbaa !70
  %1542 = getelementptr inbounds nuw i8, ptr %1117, i64 7656
  %1543 = load ptr, ptr %1542, align 8, !tbaa !46
  %1544 = getelementptr inbounds nuw i8, ptr %1117, i64 7584
  %1545 = load ptr, ptr %1544, align 32, !tbaa !57
  %1546 = getelementptr inbounds nuw i8, ptr %1117, i64 7624
  %1547 = load ptr, ptr %1546, align 8, !tbaa !71
  %1548 = getelementptr inbounds nuw i8, ptr %1117, i64 7632
  %1549 = load ptr, ptr %1548, align 16, !tbaa !72
  %1550 = getelementptr inbounds nuw i8, ptr %1117, i64 7640
  %1551 = load ptr, ptr %1550, align 8, !tbaa !73
  %1552 = getelementptr inbounds nuw i8, ptr %1117, i64 7608
  %1553 = load ptr, ptr %1552, align 8, !tbaa !74
  %1554 = getelementptr inbounds nuw i8, ptr %1117, i64 7616
  %1555 = load ptr, ptr %1554, align 64, !tbaa !75
  %1556 = icmp sgt i64 %1534, 0
  br i1 %1556, label %1557, label %1644

1557:                                             ; preds = %1531
  %1558 = load <8 x double>, ptr %1312, align 64, !tbaa !26
  %1559 = fneg <8 x double> %1558
  %1560 = fmul <8 x double> %1558, %1559
  %1561 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1558, <8 x double> %1539, <8 x double> %1538)
  %1562 = fmul <8 x double> %1560, %1561
  %1563 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1558, <8 x double> %1344, <8 x double> %1342)
  %1564 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1558, <8 x double> %1563, <8 x double> %1340)
  %1565 = fmul <8 x double> %1246, splat (double -2.000000e+00)
  %1566 = fmul <8 x double> %1565, %1303
  %1567 = fmul <8 x double> %1303, %1566
  %1568 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1303, <8 x double> %1539, <8 x double> %1538)
  %1569 = fmul <8 x double> %1567, %1568
  %1570 = getelementptr inbounds nuw i8, ptr %1117, i64 7672
  br label %1571

1571:                                             ; preds = %1557, %1612
  %1572 = phi <8 x double> [ %1558, %1557 ], [ %1616, %1612 ]
  %1573 = phi <8 x double> [ zeroinitializer, %1557 ], [ %1613, %1612 ]
  %1574 = phi <8 x double> [ zeroinitializer, %1557 ], [ %1614, %1612 ]
  %1575 = phi <8 x double> [ zeroinitializer, %1557 ], [ %1615, %1612 ]
  %1576 = phi <8 x double> [ zeroinitializer, %1557 ], [ %1639, %1612 ]
  %1577 = phi <8 x double> [ zeroinitializer, %1557 ], [ %1641, %1612 ]
  %1578 = phi <8 x double> [ %1564, %1557 ], [ %1617, %1612 ]
  %1579 = phi i64 [ 0, %1557 ], [ %1581, %1612 ]
  %1580 = phi <8 x double> [ %1562, %1557 ], [ %1618, %1612 ]
  %1581 = add nuw nsw i64 %1579, 1
  %1582 = icmp slt i64 %1581, %1534
  br i1 %1582, label %1583, label %1609

1583:                                             ; preds = %1571
  %1584 = getelementptr inbounds nuw <8 x double>, ptr %1312, i64 %1581
  %1585 = load <8 x double>, ptr %1584, align 64, !tbaa !26
  %1586 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1585, <8 x double> %1344, <8 x double> %1342)
  %1587 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1585, <8 x double> %1586, <8 x double> %1340)
  %1588 = fneg <8 x double> %1585
  %1589 = fmul <8 x double> %1585, %1588
  %1590 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1585, <8 x double> %1539, <8 x double> %1538)
  %1591 = fmul <8 x double> %1589, %1590
  %1592 = fadd <8 x double> %1572, %1585
  %1593 = fmul <8 x double> %1592, splat (double 5.000000e-01)
  %1594 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1593, <8 x double> %1324, <8 x double> %1322)
  %1595 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1593, <8 x double> %1594, <8 x double> %1320)
  %1596 = load ptr, ptr %1570, align 8, !tbaa !35
  %1597 = getelementptr inbounds nuw <8 x double>, ptr %1596, i64 %1581
  %1598 = load <8 x double>, ptr %1597, align 64, !tbaa !26
  %1599 = fmul <8 x double> %1535, %1598
  %1600 = fmul <8 x double> %1599, %1595
  %1601 = getelementptr inbounds nuw <8 x double>, ptr %1541, i64 %1581
  %1602 = load <8 x double>, ptr %1601, align 64, !tbaa !26
  %1603 = fmul <8 x double> %1246, %1602
  %1604 = fneg <8 x double> %1603
  %1605 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1604, <8 x double> %1578, <8 x double> %1600)
  %1606 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1603, <8 x double> %1587, <8 x double> %1600)
  %1607 = fadd <8 x double> %1580, %1591
  %1608 = fmul <8 x double> %1607, %1603
  br label %1612

1609:                                             ; preds = %1571
  %1610 = load <8 x double>, ptr %1337, align 64, !tbaa !26
  %1611 = load <8 x double>, ptr %1348, align 64, !tbaa !26
  br label %1612

1612:                                             ; preds = %1609, %1583
  %1613 = phi <8 x double> [ %1605, %1583 ], [ %1610, %1609 ]
  %1614 = phi <8 x double> [ %1606, %1583 ], [ %1611, %1609 ]
  %1615 = phi <8 x double> [ %1608, %1583 ], [ %1569, %1609 ]
  %1616 = phi <8 x double> [ %1585, %1583 ], [ %1572, %1609 ]
  %1617 = phi <8 x double> [ %1587, %1583 ], [ %1578, %1609 ]
  %1618 = phi <8 x double> [ %1591, %1583 ], [ %1580, %1609 ]
  %1619 = getelementptr inbounds nuw <8 x double>, ptr %1543, i64 %1579
  %1620 = load <8 x double>, ptr %1619, align 64, !tbaa !26
  %1621 = fmul <8 x double> %1537, %1620
  %1622 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1621, <8 x double> %1578, <8 x double> %1613)
  %1623 = fadd <8 x double> %1574, %1622
  %1624 = fsub <8 x double> %1615, %1575
  %1625 = fneg <8 x double> %1621
  %1626 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1625, <8 x double> %1580, <8 x double> %1624)
  %1627 = getelementptr inbounds nuw <8 x double>, ptr %1545, i64 %1579
  %1628 = load <8 x double>, ptr %1627, align 64, !tbaa !26
  %1629 = fsub <8 x double> %1626, %1628
  %1630 = fneg <8 x double> %1573
  %1631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1630, <8 x double> %1577, <8 x double> %1623)
  %1632 = fdiv <8 x double> splat (double 1.000000e+00), %1631
  %1633 = getelementptr inbounds nuw <8 x double>, ptr %1547, i64 %1579
  store <8 x double> %1629, ptr %1633, align 64, !tbaa !26
  %1634 = getelementptr inbounds nuw <8 x double>, ptr %1549, i64 %1579
  store <8 x double> %1573, ptr %1634, align 64, !tbaa !26
  %1635 = fadd <8 x double> %1573, %1614
  %1636 = fsub <8 x double> %1635, %1623
  %1637 = getelementptr inbounds nuw <8 x double>, ptr %1551, i64 %1579
  store <8 x double> %1636, ptr %1637, align 64, !tbaa !26
  %1638 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1573, <8 x double> %1576, <8 x double> %1629)
  %1639 = fmul <8 x double> %1638, %1632
  %1640 = getelementptr inbounds nuw <8 x double>, ptr %1553, i64 %1579
  store <8 x double> %1639, ptr %1640, align 64, !tbaa !26
  %1641 = fmul <8 x double> %1614, %1632
  %1642 = getelementptr inbounds nuw <8 x double>, ptr %1555, i64 %1579
  store <8 x double> %1641, ptr %1642, align 64, !tbaa !26
  %1643 = icmp eq i64 %1581, %1534
  br i1 %1643, label %1644, label %1571, !llvm.loop !77

1644:                                             ; preds = %1496, %1612, %1370, %1531
  %1645 = getelementptr inbounds nuw i8, ptr %1117, i64 7608
  %1646 = load ptr, ptr %1645, align 8, !tbaa !74
  %1647 = load i64, ptr %119, align 16, !tbaa !21
  %1648 = add nsw i64 %1647, -1
  %1649 = getelementptr inbounds <8 x double>, ptr %1646, i64 %1648
  %1650 = load <8 x double>, ptr %1649, align 64, !tbaa !26
  %1651 = getelementptr inbounds nuw i8, ptr %1117, i64 7616
  %1652 = load ptr, ptr %1651, align 64, !tbaa !75
  %1653 = getelementptr inbounds <8 x double>, ptr %1652, i64 %1648
  %1654 = load <8 x double>, ptr %1653, align 64, !tbaa !26
  %1655 = load <8 x double>, ptr %1337, align 64, !tbaa !26
  %1656 = fmul <8 x double> %1650, %1655
  %1657 = fsub <8 x double> splat (double 1.000000e+00), %1654
  %1658 = fmul <8 x double> %1655, %1657
  %1659 = load <8 x double>, ptr %1364, align 64, !tbaa !26
  %1660 = load <8 x double>, ptr %1170, align 64, !tbaa !26
  %1661 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1659, <8 x double> %1660, <8 x double> %1656)
  %1662 = load <8 x double>, ptr %1209, align 64, !tbaa !26
  %1663 = fsub <8 x double> %1661, %1662
  %1664 = fadd <8 x double> %1658, %1659
  %1665 = load <8 x double>, ptr %1206, align 64, !tbaa !26
  %1666 = fadd <8 x double> %1664, %1665
  %1667 = load <8 x i64>, ptr %1198, align 64, !tbaa !26
  %1668 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1667)
  %1669 = icmp eq i64 %1668, 0
  %1670 = load i64, ptr %120, align 8, !tbaa !22
  br i1 %1669, label %1671, label %1686

1671:                                             ; preds = %1644
  %1672 = icmp slt i64 %1670, 0
  br i1 %1672, label %1677, label %1673

1673:                                             ; preds = %1671
  %1674 = getelementptr inbounds nuw i8, ptr %1117, i64 1408
  %1675 = getelementptr inbounds nuw i8, ptr %1117, i64 7728
  %1676 = load <8 x double>, ptr %1674, align 64, !tbaa !26
  br label %1679

1677:                                             ; preds = %1679, %1671
  %1678 = getelementptr inbounds nuw i8, ptr %1117, i64 5824
  store <8 x double> %1663, ptr %1678, align 64, !tbaa !26
  br label %1813

1679:                                             ; preds = %1673, %1679
  %1680 = phi i64 [ 0, %1673 ], [ %1683, %1679 ]
  %1681 = load ptr, ptr %1675, align 16, !tbaa !78
  %1682 = getelementptr inbounds nuw <8 x double>, ptr %1681, i64 %1680
  store <8 x double> %1676, ptr %1682, align 64, !tbaa !26
  %1683 = add nuw nsw i64 %1680, 1
  %1684 = load i64, ptr %120, align 8, !tbaa !22
  %1685 = icmp slt i64 %1680, %1684
  br i1 %1685, label %1679, label %1677, !llvm.loop !79

1686:                                             ; preds = %1644
  %1687 = load <8 x double>, ptr %1177, align 64, !tbaa !26
  %1688 = load <8 x double>, ptr %1226, align 64, !tbaa !26
  %1689 = getelementptr inbounds nuw i8, ptr %1117, i64 1280
  %1690 = load <8 x double>, ptr %1689, align 64, !tbaa !26
  %1691 = fmul <8 x double> %1688, %1690
  %1692 = load <8 x double>, ptr %1117, align 64, !tbaa !26
  %1693 = fsub <8 x double> %1692, %1687
  %1694 = sitofp i64 %1670 to double
  %1695 = insertelement <8 x double> poison, double %1694, i64 0
  %1696 = shufflevector <8 x double> %1695, <8 x double> poison, <8 x i32> zeroinitializer
  %1697 = fdiv <8 x double> %1693, %1696
  %1698 = load <8 x double>, ptr %1367, align 64, !tbaa !26
  %1699 = load <8 x double>, ptr %1369, align 64, !tbaa !26
  %1700 = getelementptr inbounds nuw i8, ptr %1117, i64 1408
  %1701 = load <8 x double>, ptr %1700, align 64, !tbaa !26
  %1702 = getelementptr inbounds nuw i8, ptr %1117, i64 7728
  %1703 = load ptr, ptr %1702, align 16, !tbaa !78
  %1704 = getelementptr inbounds <8 x double>, ptr %1703, i64 %1670
  store <8 x double> %1701, ptr %1704, align 64, !tbaa !26
  %1705 = icmp sgt i64 %1670, 0
  br i1 %1705, label %1706, label %1797

1706:                                             ; preds = %1686
  %1707 = fneg <8 x double> %1691
  %1708 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1707, <8 x double> %1699, <8 x double> %1698)
  %1709 = fsub <8 x double> splat (double 1.000000e+00), %1699
  %1710 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1691, <8 x double> %1709, <8 x double> %1698)
  %1711 = getelementptr inbounds nuw i8, ptr %1117, i64 7736
  %1712 = getelementptr inbounds nuw i8, ptr %1117, i64 7744
  %1713 = getelementptr inbounds nuw i8, ptr %1117, i64 768
  %1714 = fmul <8 x double> %1691, splat (double -5.000000e-01)
  %1715 = getelementptr inbounds nuw i8, ptr %1117, i64 7704
  %1716 = getelementptr inbounds nuw i8, ptr %1117, i64 7712
  %1717 = getelementptr inbounds nuw i8, ptr %1117, i64 7720
  br label %1718

1718:                                             ; preds = %1706, %1772
  %1719 = phi <8 x double> [ %1710, %1706 ], [ %1774, %1772 ]
  %1720 = phi <8 x double> [ %1708, %1706 ], [ %1775, %1772 ]
  %1721 = phi <8 x double> [ %1660, %1706 ], [ %1790, %1772 ]
  %1722 = phi <8 x double> [ zeroinitializer, %1706 ], [ %1793, %1772 ]
  %1723 = phi <8 x double> [ %1701, %1706 ], [ %1736, %1772 ]
  %1724 = phi i64 [ %1670, %1706 ], [ %1725, %1772 ]
  %1725 = add nsw i64 %1724, -1
  %1726 = uitofp nneg i64 %1725 to double
  %1727 = insertelement <8 x double> poison, double %1726, i64 0
  %1728 = shufflevector <8 x double> %1727, <8 x double> poison, <8 x i32> zeroinitializer
  %1729 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1728, <8 x double> %1697, <8 x double> %1687)
  %1730 = load <8 x double>, ptr %1227, align 64, !tbaa !26
  %1731 = load <8 x double>, ptr %1229, align 64, !tbaa !26
  %1732 = load <8 x double>, ptr %1231, align 64, !tbaa !26
  %1733 = load <8 x double>, ptr %1233, align 64, !tbaa !26
  %1734 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1729, <8 x double> %1733, <8 x double> %1732)
  %1735 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1729, <8 x double> %1734, <8 x double> %1731)
  %1736 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1729, <8 x double> %1735, <8 x double> %1730)
  %1737 = load <8 x double>, ptr %1161, align 64, !tbaa !26
  %1738 = load <8 x double>, ptr %1147, align 64, !tbaa !26
  %1739 = load ptr, ptr %1711, align 8, !tbaa !47
  %1740 = getelementptr inbounds nuw <8 x double>, ptr %1739, i64 %1725
  %1741 = load <8 x double>, ptr %1740, align 64, !tbaa !26
  %1742 = fmul <8 x double> %1738, %1741
  %1743 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1737, <8 x double> %1736, <8 x double> %1742)
  %1744 = load <8 x double>, ptr %1151, align 64, !tbaa !26
  %1745 = load ptr, ptr %1712, align 64, !tbaa !58
  %1746 = getelementptr inbounds nuw <8 x double>, ptr %1745, i64 %1725
  %1747 = load <8 x double>, ptr %1746, align 64, !tbaa !26
  %1748 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1744, <8 x double> %1747, <8 x double> %1743)
  %1749 = fmul <8 x double> %1748, splat (double 5.000000e-01)
  %1750 = icmp eq i64 %1724, 1
  br i1 %1750, label %1766, label %1751

1751:                                             ; preds = %1718
  %1752 = load <8 x double>, ptr %1713, align 64, !tbaa !26
  %1753 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1749, <8 x double> %1752, <8 x double> %1714)
  %1754 = load <8 x double>, ptr %1310, align 64, !tbaa !26
  %1755 = fmul <8 x double> %1696, %1754
  %1756 = load <8 x double>, ptr %1248, align 64, !tbaa !26
  %1757 = load <8 x double>, ptr %1250, align 64, !tbaa !26
  %1758 = load <8 x double>, ptr %1252, align 64, !tbaa !26
  %1759 = load <8 x double>, ptr %1254, align 64, !tbaa !26
  %1760 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1729, <8 x double> %1759, <8 x double> %1758)
  %1761 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1729, <8 x double> %1760, <8 x double> %1757)
  %1762 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1729, <8 x double> %1761, <8 x double> %1756)
  %1763 = fmul <8 x double> %1755, %1762
  %1764 = fsub <8 x double> %1763, %1753
  %1765 = fadd <8 x double> %1753, %1763
  br label %1772

1766:                                             ; preds = %1718
  %1767 = load <8 x double>, ptr %1364, align 64, !tbaa !26
  %1768 = load <8 x double>, ptr %1713, align 64, !tbaa !26
  %1769 = fmul <8 x double> %1749, splat (double -2.000000e+00)
  %1770 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1769, <8 x double> %1768, <8 x double> %1767)
  %1771 = fadd <8 x double> %1691, %1770
  br label %1772

1772:                                             ; preds = %1766, %1751
  %1773 = phi <8 x double> [ %1752, %1751 ], [ %1768, %1766 ]
  %1774 = phi <8 x double> [ %1764, %1751 ], [ %1771, %1766 ]
  %1775 = phi <8 x double> [ %1765, %1751 ], [ %1767, %1766 ]
  %1776 = fsub <8 x double> %1723, %1736
  %1777 = fmul <8 x double> %1737, %1776
  %1778 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1777, <8 x double> %1773, <8 x double> %1719)
  %1779 = fadd <8 x double> %1775, %1778
  %1780 = fneg <8 x double> %1720
  %1781 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1780, <8 x double> %1722, <8 x double> %1779)
  %1782 = fdiv <8 x double> splat (double 1.000000e+00), %1781
  %1783 = load ptr, ptr %1702, align 16, !tbaa !78
  %1784 = getelementptr inbounds nuw <8 x double>, ptr %1783, i64 %1725
  store <8 x double> %1736, ptr %1784, align 64, !tbaa !26
  %1785 = load ptr, ptr %1715, align 8, !tbaa !61
  %1786 = getelementptr inbounds nuw <8 x double>, ptr %1785, i64 %1725
  %1787 = load <8 x double>, ptr %1786, align 64, !tbaa !26
  %1788 = fneg <8 x double> %1787
  %1789 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1720, <8 x double> %1721, <8 x double> %1788)
  %1790 = fmul <8 x double> %1782, %1789
  %1791 = load ptr, ptr %1716, align 32, !tbaa !80
  %1792 = getelementptr inbounds nuw <8 x double>, ptr %1791, i64 %1725
  store <8 x double> %1790, ptr %1792, align 64, !tbaa !26
  %1793 = fmul <8 x double> %1774, %1782
  %1794 = load ptr, ptr %1717, align 8, !tbaa !81
  %1795 = getelementptr inbounds nuw <8 x double>, ptr %1794, i64 %1725
  store <8 x double> %1793, ptr %1795, align 64, !tbaa !26
  %1796 = icmp samesign ugt i64 %1724, 1
  br i1 %1796, label %1718, label %1797, !llvm.loop !82

1797:                                             ; preds = %1772, %1686
  %1798 = load <8 x i64>, ptr %1198, align 64, !tbaa !26
  %1799 = load <8 x double>, ptr %1364, align 64, !tbaa !26
  %1800 = getelementptr inbounds nuw i8, ptr %1117, i64 7712
  %1801 = load ptr, ptr %1800, align 32, !tbaa !80
  %1802 = load <8 x double>, ptr %1801, align 64, !tbaa !26
  %1803 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1799, <8 x double> %1802, <8 x double> %1656)
  %1804 = icmp eq <8 x i64> %1798, zeroinitializer
  %1805 = select <8 x i1> %1804, <8 x double> %1663, <8 x double> %1803
  %1806 = getelementptr inbounds nuw i8, ptr %1117, i64 5824
  store <8 x double> %1805, ptr %1806, align 64, !tbaa !26
  %1807 = getelementptr inbounds nuw i8, ptr %1117, i64 7720
  %1808 = load ptr, ptr %1807, align 8, !tbaa !81
  %1809 = load <8 x double>, ptr %1808, align 64, !tbaa !26
  %1810 = fsub <8 x double> splat (double 1.000000e+00), %1809
  %1811 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1799, <8 x double> %1810, <8 x double> %1658)
  %1812 = select <8 x i1> %1804, <8 x double> %1666, <8 x double> %1811
  br label %1813

1813:                                             ; preds = %1677, %1797
  %1814 = phi <8 x double> [ %1666, %1677 ], [ %1812, %1797 ]
  %1815 = getelementptr inbounds nuw i8, ptr %1117, i64 5888
  store <8 x double> %1814, ptr %1815, align 64, !tbaa !26
  %1816 = add nuw nsw i64 %1115, 1
  %1817 = load i64, ptr %144, align 8, !tbaa !20
  %1818 = icmp slt i64 %1816, %1817
  br i1 %1818, label %1114, label %1111, !llvm.loop !83

1819:                                             ; preds = %1922
  %1820 = icmp sgt i64 %1923, 0
  br label %1821

1821:                                             ; preds = %1819, %1109, %1111
  %1822 = phi <8 x double> [ %1112, %1111 ], [ %1110, %1109 ], [ %1112, %1819 ]
  %1823 = phi i1 [ false, %1111 ], [ false, %1109 ], [ %1820, %1819 ]
  %1824 = fcmp ogt <8 x double> %1822, zeroinitializer
  %1825 = bitcast <8 x i1> %1824 to i8
  %1826 = icmp eq i8 %1825, 0
  br i1 %1826, label %2009, label %1926

1827:                                             ; preds = %1111, %1922
  %1828 = phi i64 [ %1923, %1922 ], [ %1817, %1111 ]
  %1829 = phi i64 [ %1924, %1922 ], [ 0, %1111 ]
  %1830 = load ptr, ptr %129, align 8, !tbaa !28
  %1831 = getelementptr inbounds nuw %struct.Piece, ptr %1830, i64 %1829
  %1832 = getelementptr inbounds nuw i8, ptr %1831, i64 7488
  %1833 = load <8 x i64>, ptr %1832, align 64, !tbaa !26
  %1834 = getelementptr inbounds nuw i8, ptr %1831, i64 2240
  %1835 = load <8 x double>, ptr %1834, align 64, !tbaa !26
  %1836 = fcmp ogt <8 x double> %1835, zeroinitializer
  %1837 = select <8 x i1> %1836, <8 x i64> %1833, <8 x i64> zeroinitializer
  %1838 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1837)
  %1839 = icmp eq i64 %1838, 0
  br i1 %1839, label %1922, label %1840

1840:                                             ; preds = %1827
  %1841 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %1842 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1841, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1843 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1841, <8 x double> %1842, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1844 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %1845 = getelementptr inbounds nuw i8, ptr %1831, i64 5824
  %1846 = load <8 x double>, ptr %1845, align 64, !tbaa !26
  %1847 = getelementptr inbounds nuw i8, ptr %1831, i64 5888
  %1848 = load <8 x double>, ptr %1847, align 64, !tbaa !26
  %1849 = fdiv <8 x double> %1846, %1848
  %1850 = fcmp olt <8 x double> %1849, %1841
  %1851 = select <8 x i1> %1850, <8 x double> %1849, <8 x double> %1841
  %1852 = getelementptr inbounds nuw i8, ptr %1831, i64 3520
  %1853 = load <8 x double>, ptr %1852, align 64, !tbaa !26
  %1854 = fcmp olt <8 x double> %1853, %1851
  %1855 = select <8 x i1> %1854, <8 x double> %1853, <8 x double> %1851
  %1856 = fneg <8 x double> %1848
  %1857 = getelementptr inbounds nuw i8, ptr %1831, i64 7104
  %1858 = load <8 x double>, ptr %1857, align 64, !tbaa !26
  br label %1862

1859:                                             ; preds = %1862
  %1860 = getelementptr inbounds nuw i8, ptr %1831, i64 5952
  store <8 x double> %1913, ptr %1860, align 64, !tbaa !26
  %1861 = load i64, ptr %144, align 8, !tbaa !20
  br label %1922

1862:                                             ; preds = %1840, %1862
  %1863 = phi <8 x i64> [ %1837, %1840 ], [ %1916, %1862 ]
  %1864 = phi i32 [ 0, %1840 ], [ %1917, %1862 ]
  %1865 = phi <8 x double> [ %1855, %1840 ], [ %1913, %1862 ]
  %1866 = fadd <8 x double> %1865, splat (double 2.731500e+02)
  %1867 = fcmp ogt <8 x double> %1865, zeroinitializer
  %1868 = select <8 x i1> %1867, <8 x double> %1865, <8 x double> zeroinitializer
  %1869 = fadd <8 x double> %1868, splat (double 2.731500e+02)
  %1870 = fadd <8 x double> %1869, splat (double 0xC08451671D164BD4)
  %1871 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %1870
  %1872 = fsub <8 x double> %1869, %1871
  %1873 = fadd <8 x double> %1872, splat (double 0x40923C3565924845)
  %1874 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1872, <8 x double> %1873, <8 x double> splat (double 0xC12619EA558539E6))
  %1875 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1872, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %1876 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1872, <8 x double> %1875, <8 x double> splat (double 0xC148A99584203885))
  %1877 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1872, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %1878 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1872, <8 x double> %1877, <8 x double> splat (double 0x4118B9E59F2691E5))
  %1879 = fmul <8 x double> %1878, splat (double 2.000000e+00)
  %1880 = fmul <8 x double> %1874, splat (double 4.000000e+00)
  %1881 = fneg <8 x double> %1878
  %1882 = fmul <8 x double> %1880, %1881
  %1883 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1876, <8 x double> %1876, <8 x double> %1882)
  %1884 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1883)
  %1885 = fsub <8 x double> %1884, %1876
  %1886 = fdiv <8 x double> %1879, %1885
  %1887 = fmul <8 x double> %1886, %1886
  %1888 = fmul <8 x double> %1887, splat (double 1.000000e+06)
  %1889 = fmul <8 x double> %1887, %1888
  %1890 = fmul <8 x double> %1866, splat (double 4.615260e+02)
  %1891 = fdiv <8 x double> %1889, %1890
  %1892 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1856, <8 x double> %1865, <8 x double> %1846)
  %1893 = fsub <8 x double> %1891, %1844
  %1894 = fcmp ogt <8 x double> %1893, zeroinitializer
  %1895 = select <8 x i1> %1894, <8 x double> %1893, <8 x double> zeroinitializer
  %1896 = fmul <8 x double> %1843, %1895
  %1897 = fdiv <8 x double> %1896, %1858
  %1898 = fsub <8 x double> %1892, %1897
  %1899 = fmul <8 x double> %1843, %1891
  %1900 = fdiv <8 x double> %1843, %1890
  %1901 = fadd <8 x double> %1900, splat (double -1.000000e+00)
  %1902 = fmul <8 x double> %1901, %1899
  %1903 = fdiv <8 x double> %1902, %1866
  %1904 = fdiv <8 x double> %1903, %1858
  %1905 = fcmp ule <8 x double> %1891, %1844
  %1906 = select <8 x i1> %1905, <8 x double> zeroinitializer, <8 x double> %1904
  %1907 = fsub <8 x double> %1856, %1906
  %1908 = fdiv <8 x double> %1898, %1907
  %1909 = fsub <8 x double> %1865, %1908
  %1910 = fcmp olt <8 x double> %1909, %1851
  %1911 = select <8 x i1> %1910, <8 x double> %1909, <8 x double> %1851
  %1912 = icmp eq <8 x i64> %1863, zeroinitializer
  %1913 = select <8 x i1> %1912, <8 x double> %1865, <8 x double> %1911
  %1914 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1908)
  %1915 = fcmp oge <8 x double> %1914, splat (double 1.000000e-05)
  %1916 = select <8 x i1> %1915, <8 x i64> %1863, <8 x i64> zeroinitializer
  %1917 = add nuw nsw i32 %1864, 1
  %1918 = icmp samesign ult i32 %1864, 7
  %1919 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1916)
  %1920 = icmp ne i64 %1919, 0
  %1921 = select i1 %1918, i1 %1920, i1 false
  br i1 %1921, label %1862, label %1859, !llvm.loop !84

1922:                                             ; preds = %1827, %1859
  %1923 = phi i64 [ %1828, %1827 ], [ %1861, %1859 ]
  %1924 = add nuw nsw i64 %1829, 1
  %1925 = icmp slt i64 %1924, %1923
  br i1 %1925, label %1827, label %1819, !llvm.loop !85

1926:                                             ; preds = %1821
  %1927 = sext <8 x i1> %1824 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %1927, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %1928 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %1929 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %1930 = fadd <8 x double> %1928, %1929
  store <8 x double> %1930, ptr %6, align 64, !tbaa !26
  %1931 = load ptr, ptr %162, align 8
  %1932 = load ptr, ptr %164, align 8
  %1933 = load ptr, ptr %165, align 8
  br label %1934

1934:                                             ; preds = %2004, %1926
  %1935 = phi i64 [ 0, %1926 ], [ %2005, %2004 ]
  %1936 = getelementptr inbounds nuw i64, ptr %4, i64 %1935
  %1937 = load i64, ptr %1936, align 8, !tbaa !30
  %1938 = icmp eq i64 %1937, 0
  br i1 %1938, label %2004, label %1939

1939:                                             ; preds = %1934
  %1940 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1935
  %1941 = load i64, ptr %1940, align 8, !tbaa !30
  %1942 = shl nsw i64 %1941, 1
  %1943 = or disjoint i64 %1942, 1
  %1944 = getelementptr inbounds i64, ptr %1931, i64 %1943
  %1945 = load i64, ptr %1944, align 8, !tbaa !30
  %1946 = shl nuw nsw i64 %1935, 1
  %1947 = or disjoint i64 %1946, 1
  %1948 = getelementptr inbounds nuw [16 x i64], ptr %163, i64 0, i64 %1947
  %1949 = getelementptr inbounds i64, ptr %1933, i64 %1943
  %1950 = load i64, ptr %1949, align 8, !tbaa !30
  %1951 = shl nsw i64 %1950, 4
  %1952 = getelementptr inbounds i8, ptr %1932, i64 %1951
  %1953 = getelementptr inbounds nuw double, ptr %6, i64 %1935
  %1954 = load double, ptr %1953, align 8, !tbaa !40
  %1955 = load i64, ptr %1948, align 8, !tbaa !30
  %1956 = getelementptr i8, ptr %1952, i64 -16
  %1957 = icmp sgt i64 %1955, 0
  br i1 %1957, label %1958, label %1967

1958:                                             ; preds = %1939, %1964
  %1959 = phi i64 [ %1965, %1964 ], [ %1955, %1939 ]
  %1960 = shl i64 %1959, 4
  %1961 = getelementptr i8, ptr %1956, i64 %1960
  %1962 = load double, ptr %1961, align 8, !tbaa !40
  %1963 = fcmp ugt double %1954, %1962
  br i1 %1963, label %1967, label %1964

1964:                                             ; preds = %1958
  %1965 = add nsw i64 %1959, -1
  store i64 %1965, ptr %1948, align 8, !tbaa !30
  %1966 = icmp sgt i64 %1959, 1
  br i1 %1966, label %1958, label %1967, !llvm.loop !67

1967:                                             ; preds = %1964, %1958, %1939
  %1968 = phi i64 [ %1955, %1939 ], [ 0, %1964 ], [ %1959, %1958 ]
  %1969 = icmp slt i64 %1968, %1945
  br i1 %1969, label %1970, label %1979

1970:                                             ; preds = %1967, %1976
  %1971 = phi i64 [ %1977, %1976 ], [ %1968, %1967 ]
  %1972 = shl nsw i64 %1971, 4
  %1973 = getelementptr inbounds i8, ptr %1952, i64 %1972
  %1974 = load double, ptr %1973, align 8, !tbaa !40
  %1975 = fcmp ule double %1954, %1974
  br i1 %1975, label %1984, label %1976

1976:                                             ; preds = %1970
  %1977 = add i64 %1971, 1
  store i64 %1977, ptr %1948, align 8, !tbaa !30
  %1978 = icmp eq i64 %1977, %1945
  br i1 %1978, label %1979, label %1970, !llvm.loop !68

1979:                                             ; preds = %1976, %1967
  %1980 = shl i64 %1945, 4
  %1981 = getelementptr i8, ptr %1952, i64 %1980
  %1982 = getelementptr i8, ptr %1981, i64 -8
  %1983 = load double, ptr %1982, align 8, !tbaa !40
  br label %2001

1984:                                             ; preds = %1970
  %1985 = shl nsw i64 %1971, 1
  %1986 = or disjoint i64 %1985, 1
  %1987 = getelementptr inbounds double, ptr %1952, i64 %1986
  %1988 = load double, ptr %1987, align 8, !tbaa !40
  %1989 = icmp sgt i64 %1971, 0
  br i1 %1989, label %1990, label %2001

1990:                                             ; preds = %1984
  %1991 = getelementptr inbounds nuw i8, ptr %1952, i64 %1972
  %1992 = getelementptr i8, ptr %1991, i64 -8
  %1993 = load double, ptr %1992, align 8, !tbaa !40
  %1994 = getelementptr i8, ptr %1991, i64 -16
  %1995 = load double, ptr %1994, align 8, !tbaa !40
  %1996 = fsub double %1954, %1995
  %1997 = fsub double %1974, %1995
  %1998 = fdiv double %1996, %1997
  %1999 = fsub double %1988, %1993
  %2000 = tail call double @llvm.fmuladd.f64(double %1998, double %1999, double %1993)
  br label %2001

2001:                                             ; preds = %1990, %1984, %1979
  %2002 = phi double [ %2000, %1990 ], [ %1988, %1984 ], [ %1983, %1979 ]
  %2003 = getelementptr inbounds nuw double, ptr %5, i64 %1935
  store double %2002, ptr %2003, align 8, !tbaa !40
  br label %2004

2004:                                             ; preds = %2001, %1934
  %2005 = add nuw nsw i64 %1935, 1
  %2006 = icmp eq i64 %2005, 8
  br i1 %2006, label %2007, label %1934, !llvm.loop !69

2007:                                             ; preds = %2004
  %2008 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2009

2009:                                             ; preds = %1821, %2007
  %2010 = phi <8 x double> [ %2008, %2007 ], [ zeroinitializer, %1821 ]
  %2011 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2012 = fcmp ogt <8 x double> %2011, zeroinitializer
  %2013 = sext <8 x i1> %2012 to <8 x i64>
  %2014 = xor <8 x i64> %2013, splat (i64 -1)
  %2015 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %2016 = fcmp oeq <8 x double> %2015, splat (double 1.000000e+00)
  %2017 = fcmp oeq <8 x double> %2015, splat (double 2.000000e+00)
  %2018 = or <8 x i1> %2016, %2017
  %2019 = select <8 x i1> %2018, <8 x i64> %2014, <8 x i64> zeroinitializer
  %2020 = xor <8 x i64> %2019, %2013
  %2021 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2022 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %2023 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %2024 = icmp eq <8 x i64> %2020, splat (i64 -1)
  %2025 = select <8 x i1> %2024, <8 x double> %2023, <8 x double> %2022
  %2026 = bitcast <8 x i1> %2012 to i8
  %2027 = icmp eq i8 %2026, 0
  br i1 %2027, label %2059, label %2028

2028:                                             ; preds = %2009
  %2029 = select <8 x i1> %2012, <8 x double> %2010, <8 x double> %2025
  %2030 = fmul <8 x double> %2029, splat (double 0x3EB0C6F7A0B5ED8D)
  %2031 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2030)
  %2032 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2031)
  %2033 = fmul <8 x double> %2032, %2032
  %2034 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2032, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2033)
  %2035 = fadd <8 x double> %2034, splat (double 0x402DD4891DBECC6B)
  %2036 = fmul <8 x double> %2032, splat (double 0x40C77A698FD9BCCA)
  %2037 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2033, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2036)
  %2038 = fadd <8 x double> %2037, splat (double 0xC0B2D7440748F0B3)
  %2039 = fmul <8 x double> %2032, splat (double 0xC148A99584203885)
  %2040 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2033, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2039)
  %2041 = fadd <8 x double> %2040, splat (double 0x4118B9E59F2691E5)
  %2042 = fmul <8 x double> %2041, splat (double 2.000000e+00)
  %2043 = fneg <8 x double> %2038
  %2044 = fmul <8 x double> %2035, splat (double 4.000000e+00)
  %2045 = fneg <8 x double> %2041
  %2046 = fmul <8 x double> %2044, %2045
  %2047 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2038, <8 x double> %2038, <8 x double> %2046)
  %2048 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2047)
  %2049 = fsub <8 x double> %2043, %2048
  %2050 = fdiv <8 x double> %2042, %2049
  %2051 = fadd <8 x double> %2050, splat (double 0x408451671D164BD4)
  %2052 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2050, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2053 = fmul <8 x double> %2052, splat (double -4.000000e+00)
  %2054 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2051, <8 x double> %2051, <8 x double> %2053)
  %2055 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2054)
  %2056 = fsub <8 x double> %2051, %2055
  %2057 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2056, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2058 = select <8 x i1> %2012, <8 x double> %2057, <8 x double> %2021
  br label %2059

2059:                                             ; preds = %2028, %2009
  %2060 = phi <8 x double> [ %2029, %2028 ], [ %2025, %2009 ]
  %2061 = phi <8 x double> [ %2058, %2028 ], [ %2021, %2009 ]
  %2062 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %2063 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2064 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %2065 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2066 = fmul <8 x double> %2064, %2065
  %2067 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2062, <8 x double> %2063, <8 x double> %2066)
  %2068 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2069 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2070 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %2071 = fneg <8 x double> %2067
  %2072 = fmul <8 x double> %2070, %2071
  %2073 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2068, <8 x double> %2069, <8 x double> %2072)
  %2074 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %2075 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2070, <8 x double> %2074, <8 x double> %2068)
  %2076 = fdiv <8 x double> %2073, %2075
  %2077 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2078 = select <8 x i1> %2024, <8 x double> %2077, <8 x double> %2022
  store <8 x double> %2078, ptr %180, align 64, !tbaa !26
  %2079 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %2080 = select <8 x i1> %2024, <8 x double> %2079, <8 x double> %2076
  store <8 x double> %2080, ptr %181, align 64, !tbaa !26
  store <8 x double> %2060, ptr %174, align 64, !tbaa !26
  %2081 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %2082 = and <8 x i64> %2081, %2019
  %2083 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2082)
  %2084 = icmp eq i64 %2083, 0
  br i1 %2084, label %2585, label %2085

2085:                                             ; preds = %2059
  %2086 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2087 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2088 = fmul <8 x double> %2064, %2087
  %2089 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2062, <8 x double> %2086, <8 x double> %2088)
  %2090 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2091 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2092 = fdiv <8 x double> %2090, %2091
  %2093 = fmul <8 x double> %2022, splat (double 3.000000e-01)
  %2094 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2095 = fadd <8 x double> %2022, %2094
  %2096 = fadd <8 x double> %2095, splat (double 2.000000e+05)
  %2097 = fmul <8 x double> %2091, splat (double 2.870530e+02)
  %2098 = fdiv <8 x double> %2022, %2097
  %2099 = fcmp ogt <8 x double> %2060, %2093
  %2100 = select <8 x i1> %2099, <8 x double> %2060, <8 x double> %2093
  %2101 = fcmp olt <8 x double> %2100, %2096
  %2102 = select <8 x i1> %2101, <8 x double> %2100, <8 x double> %2096
  %2103 = icmp eq <8 x i64> %2019, zeroinitializer
  %2104 = select <8 x i1> %2103, <8 x double> %2060, <8 x double> %2102
  %2105 = fdiv <8 x double> %2078, splat (double 2.870530e+02)
  %2106 = fmul <8 x double> %2098, splat (double 2.000000e+00)
  %2107 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2106)
  br label %2108

2108:                                             ; preds = %2151, %2085
  %2109 = phi <8 x double> [ %2061, %2085 ], [ %2143, %2151 ]
  %2110 = phi <8 x double> [ %2093, %2085 ], [ %2342, %2151 ]
  %2111 = phi <8 x double> [ %2096, %2085 ], [ %2339, %2151 ]
  %2112 = phi <8 x i64> [ %2082, %2085 ], [ %2354, %2151 ]
  %2113 = phi i32 [ 0, %2085 ], [ %2359, %2151 ]
  %2114 = phi <8 x double> [ %2104, %2085 ], [ %2356, %2151 ]
  %2115 = fmul <8 x double> %2114, splat (double 0x3EB0C6F7A0B5ED8D)
  %2116 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2115)
  %2117 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2116)
  %2118 = fmul <8 x double> %2117, %2117
  %2119 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2117, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2118)
  %2120 = fadd <8 x double> %2119, splat (double 0x402DD4891DBECC6B)
  %2121 = fmul <8 x double> %2117, splat (double 0x40C77A698FD9BCCA)
  %2122 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2118, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2121)
  %2123 = fadd <8 x double> %2122, splat (double 0xC0B2D7440748F0B3)
  %2124 = fmul <8 x double> %2117, splat (double 0xC148A99584203885)
  %2125 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2118, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2124)
  %2126 = fadd <8 x double> %2125, splat (double 0x4118B9E59F2691E5)
  %2127 = fmul <8 x double> %2126, splat (double 2.000000e+00)
  %2128 = fneg <8 x double> %2123
  %2129 = fmul <8 x double> %2120, splat (double 4.000000e+00)
  %2130 = fneg <8 x double> %2126
  %2131 = fmul <8 x double> %2129, %2130
  %2132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2123, <8 x double> %2123, <8 x double> %2131)
  %2133 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2132)
  %2134 = fsub <8 x double> %2128, %2133
  %2135 = fdiv <8 x double> %2127, %2134
  %2136 = fadd <8 x double> %2135, splat (double 0x408451671D164BD4)
  %2137 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2135, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2138 = fmul <8 x double> %2137, splat (double -4.000000e+00)
  %2139 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2136, <8 x double> %2136, <8 x double> %2138)
  %2140 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2139)
  %2141 = fsub <8 x double> %2136, %2140
  %2142 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2141, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2143 = select <8 x i1> %2103, <8 x double> %2109, <8 x double> %2142
  %2144 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2145 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> %2144, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2146 = load i64, ptr %144, align 8, !tbaa !20, !noalias !86
  %2147 = icmp sgt i64 %2146, 0
  br i1 %2147, label %2148, label %2151

2148:                                             ; preds = %2108
  %2149 = fdiv <8 x double> splat (double 1.000000e+00), %2145
  %2150 = fadd <8 x double> %2143, splat (double 1.000000e-09)
  br label %2362

2151:                                             ; preds = %2472, %2108
  %2152 = phi <8 x double> [ zeroinitializer, %2108 ], [ %2543, %2472 ]
  %2153 = phi <8 x double> [ zeroinitializer, %2108 ], [ %2544, %2472 ]
  %2154 = extractelement <8 x double> %2152, i64 0
  %2155 = extractelement <8 x double> %2152, i64 1
  %2156 = fadd double %2154, %2155
  %2157 = extractelement <8 x double> %2152, i64 2
  %2158 = fadd double %2156, %2157
  %2159 = extractelement <8 x double> %2152, i64 3
  %2160 = fadd double %2158, %2159
  %2161 = extractelement <8 x double> %2152, i64 4
  %2162 = fadd double %2160, %2161
  %2163 = extractelement <8 x double> %2152, i64 5
  %2164 = fadd double %2162, %2163
  %2165 = extractelement <8 x double> %2152, i64 6
  %2166 = fadd double %2164, %2165
  %2167 = extractelement <8 x double> %2152, i64 7
  %2168 = fadd double %2166, %2167
  %2169 = insertelement <8 x double> poison, double %2168, i64 0
  %2170 = extractelement <8 x double> %2153, i64 0
  %2171 = extractelement <8 x double> %2153, i64 1
  %2172 = fadd double %2170, %2171
  %2173 = extractelement <8 x double> %2153, i64 2
  %2174 = fadd double %2172, %2173
  %2175 = extractelement <8 x double> %2153, i64 3
  %2176 = fadd double %2174, %2175
  %2177 = extractelement <8 x double> %2153, i64 4
  %2178 = fadd double %2176, %2177
  %2179 = extractelement <8 x double> %2153, i64 5
  %2180 = fadd double %2178, %2179
  %2181 = extractelement <8 x double> %2153, i64 6
  %2182 = fadd double %2180, %2181
  %2183 = extractelement <8 x double> %2153, i64 7
  %2184 = fadd double %2182, %2183
  %2185 = shufflevector <8 x double> %2169, <8 x double> poison, <8 x i32> zeroinitializer
  %2186 = insertelement <8 x double> poison, double %2184, i64 0
  %2187 = shufflevector <8 x double> %2186, <8 x double> poison, <8 x i32> zeroinitializer
  %2188 = fsub <8 x double> %2114, %2078
  %2189 = fcmp ogt <8 x double> %2188, zeroinitializer
  %2190 = select <8 x i1> %2189, <8 x double> %2188, <8 x double> zeroinitializer
  %2191 = fadd <8 x double> %2143, splat (double 2.731500e+02)
  %2192 = fdiv <8 x double> %2190, splat (double 4.615260e+02)
  %2193 = fadd <8 x double> %2105, %2192
  %2194 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2195 = fdiv <8 x double> %2193, %2194
  %2196 = fmul <8 x double> %2194, %2195
  %2197 = fdiv <8 x double> %2114, %2196
  %2198 = load <8 x double>, ptr %173, align 64, !tbaa !26, !noalias !89
  %2199 = fsub <8 x double> %2114, %2198
  %2200 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !89
  %2201 = fsub <8 x double> %2199, %2200
  %2202 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !89
  %2203 = load <8 x double>, ptr %138, align 64, !tbaa !26, !noalias !89
  %2204 = fcmp une <8 x double> %2203, splat (double 2.000000e+00)
  %2205 = load <8 x double>, ptr %188, align 64, !tbaa !26, !noalias !89
  %2206 = select <8 x i1> %2204, <8 x double> zeroinitializer, <8 x double> %2205
  %2207 = fadd <8 x double> %2202, %2206
  %2208 = fcmp ule <8 x double> %2199, zeroinitializer
  %2209 = fcmp ule <8 x double> %2207, zeroinitializer
  %2210 = or <8 x i1> %2208, %2209
  %2211 = fmul <8 x double> %2195, splat (double 2.000000e+00)
  %2212 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2211)
  %2213 = fmul <8 x double> %2212, %2207
  %2214 = fadd <8 x double> %2199, splat (double 2.000000e+02)
  %2215 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2214)
  %2216 = select <8 x i1> %2208, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2215
  %2217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2199, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2218 = fmul <8 x double> %2217, %2213
  %2219 = fmul <8 x double> %2216, %2216
  %2220 = fmul <8 x double> %2216, %2219
  %2221 = fdiv <8 x double> %2218, %2220
  %2222 = fmul <8 x double> %2199, %2213
  %2223 = fdiv <8 x double> %2222, %2216
  %2224 = select <8 x i1> %2210, <8 x double> zeroinitializer, <8 x double> %2223
  %2225 = select <8 x i1> %2210, <8 x double> zeroinitializer, <8 x double> %2221
  %2226 = fcmp ule <8 x double> %2201, zeroinitializer
  %2227 = load <8 x double>, ptr %189, align 64, !tbaa !26, !noalias !89
  %2228 = fmul <8 x double> %2201, %2227
  %2229 = select <8 x i1> %2226, <8 x double> zeroinitializer, <8 x double> %2228
  %2230 = fadd <8 x double> %2229, %2224
  %2231 = select <8 x i1> %2226, <8 x double> zeroinitializer, <8 x double> %2227
  %2232 = fadd <8 x double> %2231, %2225
  %2233 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2234 = fsub <8 x double> %2198, %2114
  %2235 = fcmp ule <8 x double> %2234, zeroinitializer
  %2236 = fcmp ule <8 x double> %2233, zeroinitializer
  %2237 = or <8 x i1> %2235, %2236
  %2238 = fmul <8 x double> %2107, %2233
  %2239 = fadd <8 x double> %2234, splat (double 2.000000e+02)
  %2240 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2239)
  %2241 = select <8 x i1> %2235, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2240
  %2242 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2234, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2243 = fmul <8 x double> %2242, %2238
  %2244 = fmul <8 x double> %2241, %2241
  %2245 = fmul <8 x double> %2241, %2244
  %2246 = fdiv <8 x double> %2243, %2245
  %2247 = fmul <8 x double> %2234, %2238
  %2248 = fdiv <8 x double> %2247, %2241
  %2249 = load <8 x double>, ptr %149, align 64, !tbaa !26, !noalias !92
  %2250 = load <8 x double>, ptr %175, align 64, !tbaa !26, !noalias !92
  %2251 = load <8 x double>, ptr %150, align 64, !tbaa !26, !noalias !92
  %2252 = load <8 x double>, ptr %176, align 64, !tbaa !26, !noalias !92
  %2253 = fmul <8 x double> %2251, %2252
  %2254 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2249, <8 x double> %2250, <8 x double> %2253)
  %2255 = load <8 x double>, ptr %179, align 64, !tbaa !26, !noalias !92
  %2256 = load <8 x double>, ptr %148, align 64, !tbaa !26, !noalias !92
  %2257 = load <8 x double>, ptr %177, align 64, !tbaa !26, !noalias !92
  %2258 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2255, <8 x double> %2256, <8 x double> %2257)
  %2259 = load <8 x double>, ptr %178, align 64, !tbaa !26, !noalias !92
  %2260 = fneg <8 x double> %2254
  %2261 = fmul <8 x double> %2255, %2260
  %2262 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2257, <8 x double> %2259, <8 x double> %2261)
  %2263 = fdiv <8 x double> %2262, %2258
  %2264 = fcmp ogt <8 x double> %2190, splat (double 2.000000e+03)
  %2265 = select <8 x i1> %2264, <8 x double> %2190, <8 x double> splat (double 2.000000e+03)
  %2266 = fmul <8 x double> %2265, splat (double 0x3EB0C6F7A0B5ED8D)
  %2267 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2266)
  %2268 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2267)
  %2269 = fmul <8 x double> %2268, %2268
  %2270 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2268, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2269)
  %2271 = fadd <8 x double> %2270, splat (double 0x402DD4891DBECC6B)
  %2272 = fmul <8 x double> %2268, splat (double 0x40C77A698FD9BCCA)
  %2273 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2269, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2272)
  %2274 = fadd <8 x double> %2273, splat (double 0xC0B2D7440748F0B3)
  %2275 = fmul <8 x double> %2268, splat (double 0xC148A99584203885)
  %2276 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2269, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2275)
  %2277 = fadd <8 x double> %2276, splat (double 0x4118B9E59F2691E5)
  %2278 = fmul <8 x double> %2277, splat (double 2.000000e+00)
  %2279 = fneg <8 x double> %2274
  %2280 = fmul <8 x double> %2271, splat (double 4.000000e+00)
  %2281 = fneg <8 x double> %2277
  %2282 = fmul <8 x double> %2280, %2281
  %2283 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2274, <8 x double> %2274, <8 x double> %2282)
  %2284 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2283)
  %2285 = fsub <8 x double> %2279, %2284
  %2286 = fdiv <8 x double> %2278, %2285
  %2287 = fadd <8 x double> %2286, splat (double 0x408451671D164BD4)
  %2288 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2286, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2289 = fmul <8 x double> %2288, splat (double -4.000000e+00)
  %2290 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2287, <8 x double> %2287, <8 x double> %2289)
  %2291 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2290)
  %2292 = fsub <8 x double> %2287, %2291
  %2293 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2292, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2293, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2295 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2293, <8 x double> %2294, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2296 = fadd <8 x double> %2293, splat (double 2.731500e+02)
  %2297 = fcmp ule <8 x double> %2293, %2263
  %2298 = load <8 x double>, ptr %191, align 64, !tbaa !26, !noalias !92
  %2299 = fmul <8 x double> %2258, %2298
  %2300 = fadd <8 x double> %2258, %2298
  %2301 = fdiv <8 x double> %2299, %2300
  %2302 = fdiv <8 x double> %2301, %2295
  %2303 = fmul <8 x double> %2296, splat (double 4.615260e+02)
  %2304 = fmul <8 x double> %2265, %2295
  %2305 = fmul <8 x double> %2293, %2298
  %2306 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2263, <8 x double> %2258, <8 x double> %2305)
  %2307 = fdiv <8 x double> %2306, %2300
  %2308 = select <8 x i1> %2297, <8 x double> %2263, <8 x double> %2307
  store <8 x double> %2308, ptr %181, align 64, !tbaa !26, !noalias !92
  %2309 = fsub <8 x double> %2293, %2263
  %2310 = fmul <8 x double> %2309, %2302
  %2311 = select <8 x i1> %2297, <8 x double> zeroinitializer, <8 x double> %2310
  %2312 = fmul <8 x double> %2191, splat (double 4.615260e+02)
  %2313 = fmul <8 x double> %2191, %2312
  %2314 = fmul <8 x double> %2114, %2145
  %2315 = fdiv <8 x double> %2313, %2314
  %2316 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2256, <8 x double> %2114, <8 x double> %2089)
  %2317 = fsub <8 x double> %2185, %2311
  %2318 = fmul <8 x double> %2317, splat (double -4.615260e+02)
  %2319 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2092, <8 x double> %2316, <8 x double> %2318)
  %2320 = fmul <8 x double> %2248, splat (double -2.870530e+02)
  %2321 = select <8 x i1> %2237, <8 x double> splat (double -0.000000e+00), <8 x double> %2320
  %2322 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2197, <8 x double> %2230, <8 x double> %2321)
  %2323 = fadd <8 x double> %2322, %2319
  %2324 = fneg <8 x double> %2296
  %2325 = fmul <8 x double> %2303, %2324
  %2326 = fdiv <8 x double> %2325, %2304
  %2327 = fmul <8 x double> %2326, %2302
  %2328 = select <8 x i1> %2297, <8 x double> splat (double -0.000000e+00), <8 x double> %2327
  %2329 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2187, <8 x double> %2315, <8 x double> %2328)
  %2330 = fmul <8 x double> %2329, splat (double -4.615260e+02)
  %2331 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2092, <8 x double> %2256, <8 x double> %2330)
  %2332 = fmul <8 x double> %2246, splat (double 2.870530e+02)
  %2333 = select <8 x i1> %2237, <8 x double> zeroinitializer, <8 x double> %2332
  %2334 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2197, <8 x double> %2232, <8 x double> %2333)
  %2335 = fadd <8 x double> %2334, %2331
  %2336 = fcmp ule <8 x double> %2323, zeroinitializer
  %2337 = fcmp olt <8 x double> %2111, %2114
  %2338 = select <8 x i1> %2336, <8 x i1> splat (i1 true), <8 x i1> %2337
  %2339 = select <8 x i1> %2338, <8 x double> %2111, <8 x double> %2114
  %2340 = fcmp ogt <8 x double> %2110, %2114
  %2341 = select <8 x i1> %2340, <8 x double> %2110, <8 x double> %2114
  %2342 = select <8 x i1> %2336, <8 x double> %2341, <8 x double> %2110
  %2343 = fdiv <8 x double> %2323, %2335
  %2344 = fsub <8 x double> %2114, %2343
  %2345 = fcmp uge <8 x double> %2342, %2344
  %2346 = fcmp uge <8 x double> %2344, %2339
  %2347 = or <8 x i1> %2345, %2346
  %2348 = fadd <8 x double> %2342, %2339
  %2349 = fmul <8 x double> %2348, splat (double 5.000000e-01)
  %2350 = select <8 x i1> %2347, <8 x double> %2349, <8 x double> %2344
  %2351 = fsub <8 x double> %2350, %2114
  %2352 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2351)
  %2353 = fcmp oge <8 x double> %2352, splat (double 2.000000e-01)
  %2354 = select <8 x i1> %2353, <8 x i64> %2112, <8 x i64> zeroinitializer
  %2355 = icmp eq <8 x i64> %2354, zeroinitializer
  %2356 = select <8 x i1> %2355, <8 x double> %2114, <8 x double> %2350
  %2357 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2354)
  %2358 = icmp ne i64 %2357, 0
  %2359 = add nuw nsw i32 %2113, 1
  %2360 = icmp samesign ult i32 %2113, 59
  %2361 = select i1 %2358, i1 %2360, i1 false
  br i1 %2361, label %2108, label %2548, !llvm.loop !95

2362:                                             ; preds = %2148, %2472
  %2363 = phi <8 x double> [ zeroinitializer, %2148 ], [ %2544, %2472 ]
  %2364 = phi <8 x double> [ zeroinitializer, %2148 ], [ %2543, %2472 ]
  %2365 = phi i64 [ 0, %2148 ], [ %2545, %2472 ]
  %2366 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !86
  %2367 = getelementptr inbounds nuw %struct.Piece, ptr %2366, i64 %2365
  %2368 = getelementptr inbounds nuw i8, ptr %2367, i64 5824
  %2369 = load <8 x double>, ptr %2368, align 64, !tbaa !26, !noalias !86
  %2370 = getelementptr inbounds nuw i8, ptr %2367, i64 5888
  %2371 = load <8 x double>, ptr %2370, align 64, !tbaa !26, !noalias !86
  %2372 = getelementptr inbounds nuw i8, ptr %2367, i64 7296
  %2373 = load <8 x double>, ptr %2372, align 64, !tbaa !26, !noalias !86
  %2374 = fcmp ule <8 x double> %2373, splat (double 1.000000e+00)
  %2375 = fmul <8 x double> %2143, %2371
  %2376 = fcmp ogt <8 x double> %2369, %2375
  %2377 = and <8 x i1> %2374, %2376
  %2378 = fneg <8 x double> %2371
  %2379 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2378, <8 x double> %2143, <8 x double> %2369)
  %2380 = fmul <8 x double> %2149, %2379
  %2381 = select <8 x i1> %2377, <8 x double> %2380, <8 x double> zeroinitializer
  %2382 = fmul <8 x double> %2149, %2378
  %2383 = fdiv <8 x double> %2369, %2371
  %2384 = select <8 x i1> %2377, <8 x double> %2143, <8 x double> %2383
  %2385 = getelementptr inbounds nuw i8, ptr %2367, i64 7488
  %2386 = load <8 x i64>, ptr %2385, align 64, !tbaa !26, !noalias !86
  %2387 = getelementptr inbounds nuw i8, ptr %2367, i64 2240
  %2388 = load <8 x double>, ptr %2387, align 64, !tbaa !26, !noalias !86
  %2389 = fcmp ule <8 x double> %2388, zeroinitializer
  %2390 = xor <8 x i1> %2374, splat (i1 true)
  %2391 = select <8 x i1> %2390, <8 x i1> splat (i1 true), <8 x i1> %2389
  %2392 = getelementptr inbounds nuw i8, ptr %2367, i64 5952
  %2393 = load <8 x double>, ptr %2392, align 64, !tbaa !26, !noalias !86
  %2394 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2378, <8 x double> %2393, <8 x double> %2369)
  %2395 = fcmp ogt <8 x double> %2394, zeroinitializer
  %2396 = select <8 x i1> %2395, <8 x double> %2394, <8 x double> zeroinitializer
  %2397 = fmul <8 x double> %2149, %2396
  %2398 = icmp eq <8 x i64> %2386, zeroinitializer
  %2399 = select <8 x i1> %2391, <8 x i1> splat (i1 true), <8 x i1> %2398
  %2400 = select <8 x i1> %2399, <8 x double> %2381, <8 x double> %2397
  %2401 = select <8 x i1> %2399, <8 x double> %2384, <8 x double> %2393
  %2402 = select <8 x i1> %2399, <8 x i1> %2377, <8 x i1> zeroinitializer
  %2403 = select <8 x i1> %2402, <8 x double> %2382, <8 x double> zeroinitializer
  %2404 = load i64, ptr %119, align 16, !tbaa !21, !noalias !96
  %2405 = sitofp i64 %2404 to double
  %2406 = insertelement <8 x double> poison, double %2405, i64 0
  %2407 = shufflevector <8 x double> %2406, <8 x double> poison, <8 x i32> zeroinitializer
  %2408 = icmp sgt i64 %2404, 0
  br i1 %2408, label %2409, label %2472

2409:                                             ; preds = %2362
  %2410 = getelementptr inbounds nuw i8, ptr %2367, i64 7608
  %2411 = load ptr, ptr %2410, align 8, !tbaa !74, !noalias !96
  %2412 = getelementptr inbounds nuw i8, ptr %2367, i64 7616
  %2413 = load ptr, ptr %2412, align 64, !tbaa !75, !noalias !96
  %2414 = getelementptr inbounds nuw i8, ptr %2367, i64 7552
  %2415 = load i64, ptr %2414, align 64, !tbaa !31, !noalias !96
  %2416 = getelementptr inbounds nuw i8, ptr %2367, i64 7632
  %2417 = getelementptr inbounds nuw i8, ptr %2367, i64 7624
  %2418 = getelementptr inbounds nuw i8, ptr %2367, i64 7640
  br label %2419

2419:                                             ; preds = %2409, %2454
  %2420 = phi <8 x i64> [ splat (i64 -1), %2409 ], [ %2434, %2454 ]
  %2421 = phi i64 [ %2404, %2409 ], [ %2425, %2454 ]
  %2422 = phi <8 x double> [ %2407, %2409 ], [ %2470, %2454 ]
  %2423 = phi <8 x double> [ zeroinitializer, %2409 ], [ %2466, %2454 ]
  %2424 = phi <8 x double> [ zeroinitializer, %2409 ], [ %2464, %2454 ]
  %2425 = add nsw i64 %2421, -1
  %2426 = getelementptr inbounds nuw <8 x double>, ptr %2411, i64 %2425
  %2427 = load <8 x double>, ptr %2426, align 64, !tbaa !26, !noalias !96
  %2428 = getelementptr inbounds nuw <8 x double>, ptr %2413, i64 %2425
  %2429 = load <8 x double>, ptr %2428, align 64, !tbaa !26, !noalias !96
  %2430 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> %2143, <8 x double> %2427)
  %2431 = fcmp ogt <8 x double> %2430, %2150
  %2432 = select <8 x i1> %2431, <8 x i64> %2420, <8 x i64> zeroinitializer
  %2433 = icmp sgt i64 %2421, %2415
  %2434 = select i1 %2433, <8 x i64> %2432, <8 x i64> zeroinitializer
  %2435 = icmp slt i64 %2421, %2404
  br i1 %2435, label %2436, label %2449

2436:                                             ; preds = %2419
  %2437 = load ptr, ptr %2416, align 16, !tbaa !72, !noalias !96
  %2438 = getelementptr inbounds nuw <8 x double>, ptr %2437, i64 %2421
  %2439 = load <8 x double>, ptr %2438, align 64, !tbaa !26, !noalias !96
  %2440 = fsub <8 x double> %2430, %2143
  %2441 = fmul <8 x double> %2440, %2439
  %2442 = icmp eq <8 x i64> %2434, %2420
  %2443 = select <8 x i1> %2442, <8 x double> zeroinitializer, <8 x double> %2441
  %2444 = fadd <8 x double> %2424, %2443
  %2445 = fadd <8 x double> %2429, splat (double -1.000000e+00)
  %2446 = fmul <8 x double> %2445, %2439
  %2447 = select <8 x i1> %2442, <8 x double> zeroinitializer, <8 x double> %2446
  %2448 = fadd <8 x double> %2423, %2447
  br label %2449

2449:                                             ; preds = %2436, %2419
  %2450 = phi <8 x double> [ %2444, %2436 ], [ %2424, %2419 ]
  %2451 = phi <8 x double> [ %2448, %2436 ], [ %2423, %2419 ]
  %2452 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2434)
  %2453 = icmp eq i64 %2452, 0
  br i1 %2453, label %2472, label %2454

2454:                                             ; preds = %2449
  %2455 = load ptr, ptr %2417, align 8, !tbaa !71, !noalias !96
  %2456 = getelementptr inbounds nuw <8 x double>, ptr %2455, i64 %2425
  %2457 = load <8 x double>, ptr %2456, align 64, !tbaa !26, !noalias !96
  %2458 = load ptr, ptr %2418, align 8, !tbaa !73, !noalias !96
  %2459 = getelementptr inbounds nuw <8 x double>, ptr %2458, i64 %2425
  %2460 = load <8 x double>, ptr %2459, align 64, !tbaa !26, !noalias !96
  %2461 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2460, <8 x double> %2143, <8 x double> %2457)
  %2462 = icmp eq <8 x i64> %2434, zeroinitializer
  %2463 = select <8 x i1> %2462, <8 x double> zeroinitializer, <8 x double> %2461
  %2464 = fadd <8 x double> %2450, %2463
  %2465 = select <8 x i1> %2462, <8 x double> zeroinitializer, <8 x double> %2460
  %2466 = fadd <8 x double> %2451, %2465
  %2467 = uitofp nneg i64 %2425 to double
  %2468 = insertelement <8 x double> poison, double %2467, i64 0
  %2469 = shufflevector <8 x double> %2468, <8 x double> poison, <8 x i32> zeroinitializer
  %2470 = select <8 x i1> %2462, <8 x double> %2422, <8 x double> %2469
  %2471 = icmp samesign ugt i64 %2421, 1
  br i1 %2471, label %2419, label %2472, !llvm.loop !99

2472:                                             ; preds = %2454, %2449, %2362
  %2473 = phi <8 x double> [ %2407, %2362 ], [ %2422, %2449 ], [ %2470, %2454 ]
  %2474 = phi <8 x double> [ zeroinitializer, %2362 ], [ %2450, %2449 ], [ %2464, %2454 ]
  %2475 = phi <8 x double> [ zeroinitializer, %2362 ], [ %2451, %2449 ], [ %2466, %2454 ]
  %2476 = getelementptr inbounds nuw i8, ptr %2367, i64 6080
  %2477 = load <8 x double>, ptr %2476, align 64, !tbaa !26, !noalias !86
  %2478 = getelementptr inbounds nuw i8, ptr %2367, i64 5504
  %2479 = load <8 x double>, ptr %2478, align 64, !tbaa !26, !noalias !86
  %2480 = getelementptr inbounds nuw i8, ptr %2367, i64 7040
  %2481 = load <8 x double>, ptr %2480, align 64, !tbaa !26, !noalias !86
  %2482 = fneg <8 x double> %2481
  %2483 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2477, <8 x double> %2479, <8 x double> %2482)
  %2484 = getelementptr inbounds nuw i8, ptr %2367, i64 6976
  %2485 = load <8 x double>, ptr %2484, align 64, !tbaa !26, !noalias !86
  %2486 = fadd <8 x double> %2477, %2485
  %2487 = getelementptr inbounds nuw i8, ptr %2367, i64 7360
  %2488 = load <8 x i64>, ptr %2487, align 64, !tbaa !26, !noalias !86
  %2489 = getelementptr inbounds nuw i8, ptr %2367, i64 7712
  %2490 = load ptr, ptr %2489, align 32, !tbaa !80, !noalias !86
  %2491 = load <8 x double>, ptr %2490, align 64, !tbaa !26, !noalias !86
  %2492 = fmul <8 x double> %2477, %2491
  %2493 = icmp eq <8 x i64> %2488, zeroinitializer
  %2494 = select <8 x i1> %2493, <8 x double> %2483, <8 x double> %2492
  %2495 = getelementptr inbounds nuw i8, ptr %2367, i64 7720
  %2496 = load ptr, ptr %2495, align 8, !tbaa !81, !noalias !86
  %2497 = load <8 x double>, ptr %2496, align 64, !tbaa !26, !noalias !86
  %2498 = fsub <8 x double> splat (double 1.000000e+00), %2497
  %2499 = fmul <8 x double> %2477, %2498
  %2500 = select <8 x i1> %2493, <8 x double> %2486, <8 x double> %2499
  %2501 = fneg <8 x double> %2500
  %2502 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2501, <8 x double> %2143, <8 x double> %2494)
  %2503 = fcmp olt <8 x double> %2473, %2407
  %2504 = and <8 x i1> %2374, %2503
  %2505 = fcmp ogt <8 x double> %2474, zeroinitializer
  %2506 = fcmp oge <8 x double> %2502, zeroinitializer
  %2507 = and <8 x i1> %2505, %2506
  %2508 = and <8 x i1> %2504, %2507
  %2509 = sext <8 x i1> %2508 to <8 x i64>
  %2510 = xor <8 x i64> %2509, splat (i64 -1)
  %2511 = fadd <8 x double> %2474, %2502
  %2512 = fcmp ogt <8 x double> %2511, zeroinitializer
  %2513 = select <8 x i1> %2512, <8 x i1> %2504, <8 x i1> zeroinitializer
  %2514 = select <8 x i1> %2513, <8 x i64> %2510, <8 x i64> zeroinitializer
  %2515 = or <8 x i64> %2514, %2509
  %2516 = fmul <8 x double> %2149, %2502
  %2517 = select <8 x i1> %2508, <8 x double> %2516, <8 x double> zeroinitializer
  %2518 = icmp eq <8 x i64> %2515, zeroinitializer
  %2519 = select <8 x i1> %2518, <8 x double> %2400, <8 x double> %2517
  %2520 = select <8 x i1> %2518, <8 x double> %2401, <8 x double> %2143
  %2521 = fsub <8 x double> %2475, %2500
  %2522 = fmul <8 x double> %2149, %2521
  %2523 = select <8 x i1> %2518, <8 x double> %2403, <8 x double> %2522
  %2524 = getelementptr inbounds nuw i8, ptr %2367, i64 5632
  store <8 x double> %2519, ptr %2524, align 64, !tbaa !26, !noalias !86
  %2525 = getelementptr inbounds nuw i8, ptr %2367, i64 5568
  store <8 x double> %2520, ptr %2525, align 64, !tbaa !26, !noalias !86
  %2526 = fmul <8 x double> %2149, %2474
  %2527 = fmul <8 x double> %2149, %2511
  %2528 = icmp eq <8 x i64> %2514, zeroinitializer
  %2529 = select <8 x i1> %2528, <8 x double> zeroinitializer, <8 x double> %2527
  %2530 = select <8 x i1> %2508, <8 x double> %2526, <8 x double> %2529
  %2531 = getelementptr inbounds nuw i8, ptr %2367, i64 5696
  store <8 x double> %2530, ptr %2531, align 64, !tbaa !26, !noalias !86
  %2532 = load i64, ptr %119, align 16, !tbaa !21, !noalias !86
  %2533 = sitofp i64 %2532 to double
  %2534 = insertelement <8 x double> poison, double %2533, i64 0
  %2535 = shufflevector <8 x double> %2534, <8 x double> poison, <8 x i32> zeroinitializer
  %2536 = select <8 x i1> %2518, <8 x double> %2535, <8 x double> %2473
  %2537 = getelementptr inbounds nuw i8, ptr %2367, i64 5760
  store <8 x double> %2536, ptr %2537, align 64, !tbaa !26, !noalias !86
  %2538 = getelementptr inbounds nuw i8, ptr %2367, i64 128
  %2539 = load <8 x double>, ptr %2538, align 64, !tbaa !26, !noalias !86
  %2540 = fadd <8 x double> %2519, %2530
  %2541 = fmul <8 x double> %2539, %2540
  %2542 = fmul <8 x double> %2539, %2523
  %2543 = fadd <8 x double> %2364, %2541
  %2544 = fadd <8 x double> %2363, %2542
  %2545 = add nuw nsw i64 %2365, 1
  %2546 = load i64, ptr %144, align 8, !tbaa !20, !noalias !86
  %2547 = icmp slt i64 %2545, %2546
  br i1 %2547, label %2362, label %2151, !llvm.loop !100

2548:                                             ; preds = %2151
  %2549 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %2550 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %2551 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %2552 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %2553 = fmul <8 x double> %2551, %2552
  %2554 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2549, <8 x double> %2550, <8 x double> %2553)
  %2555 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2556 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %2557 = fsub <8 x double> %2556, %2356
  %2558 = fcmp ule <8 x double> %2557, zeroinitializer
  %2559 = fcmp ule <8 x double> %2555, zeroinitializer
  %2560 = or <8 x i1> %2559, %2558
  %2561 = fmul <8 x double> %2107, %2555
  %2562 = fadd <8 x double> %2557, splat (double 2.000000e+02)
  %2563 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2562)
  %2564 = select <8 x i1> %2558, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2563
  %2565 = fmul <8 x double> %2561, %2557
  %2566 = fdiv <8 x double> %2565, %2564
  %2567 = fmul <8 x double> %2566, splat (double 2.870530e+02)
  %2568 = select <8 x i1> %2560, <8 x double> zeroinitializer, <8 x double> %2567
  %2569 = fdiv <8 x double> %2568, %2092
  %2570 = fsub <8 x double> %2569, %2554
  %2571 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %2572 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2573 = fmul <8 x double> %2195, %2572
  %2574 = fdiv <8 x double> %2230, %2573
  %2575 = fadd <8 x double> %2571, %2574
  %2576 = fdiv <8 x double> %2570, %2575
  %2577 = fcmp ogt <8 x double> %2576, zeroinitializer
  %2578 = select <8 x i1> %2577, <8 x double> %2576, <8 x double> zeroinitializer
  %2579 = fcmp olt <8 x double> %2578, %2356
  %2580 = select <8 x i1> %2579, <8 x double> %2578, <8 x double> %2356
  %2581 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2582 = select <8 x i1> %2103, <8 x double> %2581, <8 x double> %2580
  store <8 x double> %2582, ptr %180, align 64, !tbaa !26
  %2583 = select <8 x i1> %2103, <8 x double> %2080, <8 x double> %2308
  store <8 x double> %2583, ptr %181, align 64, !tbaa !26
  store <8 x double> %2356, ptr %174, align 64, !tbaa !26
  store <8 x double> %2143, ptr %194, align 64, !tbaa !26
  %2584 = load i64, ptr %144, align 8, !tbaa !20
  br label %2753

2585:                                             ; preds = %2059
  store <8 x double> %2061, ptr %194, align 64, !tbaa !26
  br i1 %1823, label %2586, label %2756

2586:                                             ; preds = %2585
  %2587 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2061, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2588 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2061, <8 x double> %2587, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2589 = fdiv <8 x double> splat (double 1.000000e+00), %2588
  %2590 = fadd <8 x double> %2061, splat (double 1.000000e-09)
  br label %2591

2591:                                             ; preds = %2586, %2688
  %2592 = phi i64 [ 0, %2586 ], [ %2750, %2688 ]
  %2593 = load ptr, ptr %129, align 8, !tbaa !28, !noalias !101
  %2594 = getelementptr inbounds nuw %struct.Piece, ptr %2593, i64 %2592
  %2595 = getelementptr inbounds nuw i8, ptr %2594, i64 5824
  %2596 = load <8 x double>, ptr %2595, align 64, !tbaa !26, !noalias !101
  %2597 = getelementptr inbounds nuw i8, ptr %2594, i64 5888
  %2598 = load <8 x double>, ptr %2597, align 64, !tbaa !26, !noalias !101
  %2599 = getelementptr inbounds nuw i8, ptr %2594, i64 7296
  %2600 = load <8 x double>, ptr %2599, align 64, !tbaa !26, !noalias !101
  %2601 = fcmp ule <8 x double> %2600, splat (double 1.000000e+00)
  %2602 = fmul <8 x double> %2061, %2598
  %2603 = fcmp ogt <8 x double> %2596, %2602
  %2604 = and <8 x i1> %2601, %2603
  %2605 = fneg <8 x double> %2598
  %2606 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2605, <8 x double> %2061, <8 x double> %2596)
  %2607 = fmul <8 x double> %2589, %2606
  %2608 = select <8 x i1> %2604, <8 x double> %2607, <8 x double> zeroinitializer
  %2609 = fdiv <8 x double> %2596, %2598
  %2610 = select <8 x i1> %2604, <8 x double> %2061, <8 x double> %2609
  %2611 = getelementptr inbounds nuw i8, ptr %2594, i64 7488
  %2612 = load <8 x i64>, ptr %2611, align 64, !tbaa !26, !noalias !101
  %2613 = getelementptr inbounds nuw i8, ptr %2594, i64 2240
  %2614 = load <8 x double>, ptr %2613, align 64, !tbaa !26, !noalias !101
  %2615 = fcmp ule <8 x double> %2614, zeroinitializer
  %2616 = xor <8 x i1> %2601, splat (i1 true)
  %2617 = select <8 x i1> %2616, <8 x i1> splat (i1 true), <8 x i1> %2615
  %2618 = getelementptr inbounds nuw i8, ptr %2594, i64 5952
  %2619 = load <8 x double>, ptr %2618, align 64, !tbaa !26, !noalias !101
  %2620 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2605, <8 x double> %2619, <8 x double> %2596)
  %2621 = fcmp ogt <8 x double> %2620, zeroinitializer
  %2622 = select <8 x i1> %2621, <8 x double> %2620, <8 x double> zeroinitializer
  %2623 = fmul <8 x double> %2589, %2622
  %2624 = icmp eq <8 x i64> %2612, zeroinitializer
  %2625 = select <8 x i1> %2617, <8 x i1> splat (i1 true), <8 x i1> %2624
  %2626 = select <8 x i1> %2625, <8 x double> %2608, <8 x double> %2623
  %2627 = select <8 x i1> %2625, <8 x double> %2610, <8 x double> %2619
  %2628 = load i64, ptr %119, align 16, !tbaa !21, !noalias !104
  %2629 = sitofp i64 %2628 to double
  %2630 = insertelement <8 x double> poison, double %2629, i64 0
  %2631 = shufflevector <8 x double> %2630, <8 x double> poison, <8 x i32> zeroinitializer
  %2632 = icmp sgt i64 %2628, 0
  br i1 %2632, label %2633, label %2688

2633:                                             ; preds = %2591
  %2634 = getelementptr inbounds nuw i8, ptr %2594, i64 7608
  %2635 = load ptr, ptr %2634, align 8, !tbaa !74, !noalias !104
  %2636 = getelementptr inbounds nuw i8, ptr %2594, i64 7616
  %2637 = load ptr, ptr %2636, align 64, !tbaa !75, !noalias !104
  %2638 = getelementptr inbounds nuw i8, ptr %2594, i64 7552
  %2639 = load i64, ptr %2638, align 64, !tbaa !31, !noalias !104
  %2640 = getelementptr inbounds nuw i8, ptr %2594, i64 7632
  %2641 = getelementptr inbounds nuw i8, ptr %2594, i64 7624
  %2642 = getelementptr inbounds nuw i8, ptr %2594, i64 7640
  br label %2643

2643:                                             ; preds = %2633, %2672
  %2644 = phi <8 x i64> [ splat (i64 -1), %2633 ], [ %2657, %2672 ]
  %2645 = phi i64 [ %2628, %2633 ], [ %2648, %2672 ]
  %2646 = phi <8 x double> [ %2631, %2633 ], [ %2686, %2672 ]
  %2647 = phi <8 x double> [ zeroinitializer, %2633 ], [ %2682, %2672 ]
  %2648 = add nsw i64 %2645, -1
  %2649 = getelementptr inbounds nuw <8 x double>, ptr %2635, i64 %2648
  %2650 = load <8 x double>, ptr %2649, align 64, !tbaa !26, !noalias !104
  %2651 = getelementptr inbounds nuw <8 x double>, ptr %2637, i64 %2648
  %2652 = load <8 x double>, ptr %2651, align 64, !tbaa !26, !noalias !104
  %2653 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2652, <8 x double> %2061, <8 x double> %2650)
  %2654 = fcmp ogt <8 x double> %2653, %2590
  %2655 = select <8 x i1> %2654, <8 x i64> %2644, <8 x i64> zeroinitializer
  %2656 = icmp sgt i64 %2645, %2639
  %2657 = select i1 %2656, <8 x i64> %2655, <8 x i64> zeroinitializer
  %2658 = icmp slt i64 %2645, %2628
  br i1 %2658, label %2659, label %2668

2659:                                             ; preds = %2643
  %2660 = load ptr, ptr %2640, align 16, !tbaa !72, !noalias !104
  %2661 = getelementptr inbounds nuw <8 x double>, ptr %2660, i64 %2645
  %2662 = load <8 x double>, ptr %2661, align 64, !tbaa !26, !noalias !104
  %2663 = fsub <8 x double> %2653, %2061
  %2664 = fmul <8 x double> %2663, %2662
  %2665 = icmp eq <8 x i64> %2657, %2644
  %2666 = select <8 x i1> %2665, <8 x double> zeroinitializer, <8 x double> %2664
  %2667 = fadd <8 x double> %2647, %2666
  br label %2668

2668:                                             ; preds = %2659, %2643
  %2669 = phi <8 x double> [ %2667, %2659 ], [ %2647, %2643 ]
  %2670 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2657)
  %2671 = icmp eq i64 %2670, 0
  br i1 %2671, label %2688, label %2672

2672:                                             ; preds = %2668
  %2673 = load ptr, ptr %2641, align 8, !tbaa !71, !noalias !104
  %2674 = getelementptr inbounds nuw <8 x double>, ptr %2673, i64 %2648
  %2675 = load <8 x double>, ptr %2674, align 64, !tbaa !26, !noalias !104
  %2676 = load ptr, ptr %2642, align 8, !tbaa !73, !noalias !104
  %2677 = getelementptr inbounds nuw <8 x double>, ptr %2676, i64 %2648
  %2678 = load <8 x double>, ptr %2677, align 64, !tbaa !26, !noalias !104
  %2679 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2678, <8 x double> %2061, <8 x double> %2675)
  %2680 = icmp eq <8 x i64> %2657, zeroinitializer
  %2681 = select <8 x i1> %2680, <8 x double> zeroinitializer, <8 x double> %2679
  %2682 = fadd <8 x double> %2669, %2681
  %2683 = uitofp nneg i64 %2648 to double
  %2684 = insertelement <8 x double> poison, double %2683, i64 0
  %2685 = shufflevector <8 x double> %2684, <8 x double> poison, <8 x i32> zeroinitializer
  %2686 = select <8 x i1> %2680, <8 x double> %2646, <8 x double> %2685
  %2687 = icmp samesign ugt i64 %2645, 1
  br i1 %2687, label %2643, label %2688, !llvm.loop !99

2688:                                             ; preds = %2672, %2668, %2591
  %2689 = phi <8 x double> [ %2631, %2591 ], [ %2646, %2668 ], [ %2686, %2672 ]
  %2690 = phi <8 x double> [ zeroinitializer, %2591 ], [ %2669, %2668 ], [ %2682, %2672 ]
  %2691 = getelementptr inbounds nuw i8, ptr %2594, i64 6080
  %2692 = load <8 x double>, ptr %2691, align 64, !tbaa !26, !noalias !101
  %2693 = getelementptr inbounds nuw i8, ptr %2594, i64 5504
  %2694 = load <8 x double>, ptr %2693, align 64, !tbaa !26, !noalias !101
  %2695 = getelementptr inbounds nuw i8, ptr %2594, i64 7040
  %2696 = load <8 x double>, ptr %2695, align 64, !tbaa !26, !noalias !101
  %2697 = fneg <8 x double> %2696
  %2698 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2692, <8 x double> %2694, <8 x double> %2697)
  %2699 = getelementptr inbounds nuw i8, ptr %2594, i64 6976
  %2700 = load <8 x double>, ptr %2699, align 64, !tbaa !26, !noalias !101
  %2701 = fadd <8 x double> %2692, %2700
  %2702 = getelementptr inbounds nuw i8, ptr %2594, i64 7360
  %2703 = load <8 x i64>, ptr %2702, align 64, !tbaa !26, !noalias !101
  %2704 = getelementptr inbounds nuw i8, ptr %2594, i64 7712
  %2705 = load ptr, ptr %2704, align 32, !tbaa !80, !noalias !101
  %2706 = load <8 x double>, ptr %2705, align 64, !tbaa !26, !noalias !101
  %2707 = fmul <8 x double> %2692, %2706
  %2708 = icmp eq <8 x i64> %2703, zeroinitializer
  %2709 = select <8 x i1> %2708, <8 x double> %2698, <8 x double> %2707
  %2710 = getelementptr inbounds nuw i8, ptr %2594, i64 7720
  %2711 = load ptr, ptr %2710, align 8, !tbaa !81, !noalias !101
  %2712 = load <8 x double>, ptr %2711, align 64, !tbaa !26, !noalias !101
  %2713 = fsub <8 x double> splat (double 1.000000e+00), %2712
  %2714 = fmul <8 x double> %2692, %2713
  %2715 = select <8 x i1> %2708, <8 x double> %2701, <8 x double> %2714
  %2716 = fneg <8 x double> %2715
  %2717 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2716, <8 x double> %2061, <8 x double> %2709)
  %2718 = fcmp olt <8 x double> %2689, %2631
  %2719 = and <8 x i1> %2601, %2718
  %2720 = fcmp ogt <8 x double> %2690, zeroinitializer
  %2721 = fcmp oge <8 x double> %2717, zeroinitializer
  %2722 = and <8 x i1> %2720, %2721
  %2723 = and <8 x i1> %2719, %2722
  %2724 = sext <8 x i1> %2723 to <8 x i64>
  %2725 = xor <8 x i64> %2724, splat (i64 -1)
  %2726 = fadd <8 x double> %2690, %2717
  %2727 = fcmp ogt <8 x double> %2726, zeroinitializer
  %2728 = select <8 x i1> %2727, <8 x i1> %2719, <8 x i1> zeroinitializer
  %2729 = select <8 x i1> %2728, <8 x i64> %2725, <8 x i64> zeroinitializer
  %2730 = or <8 x i64> %2729, %2724
  %2731 = fmul <8 x double> %2589, %2717
  %2732 = select <8 x i1> %2723, <8 x double> %2731, <8 x double> zeroinitializer
  %2733 = icmp eq <8 x i64> %2730, zeroinitializer
  %2734 = select <8 x i1> %2733, <8 x double> %2626, <8 x double> %2732
  %2735 = select <8 x i1> %2733, <8 x double> %2627, <8 x double> %2061
  %2736 = getelementptr inbounds nuw i8, ptr %2594, i64 5632
  store <8 x double> %2734, ptr %2736, align 64, !tbaa !26, !noalias !101
  %2737 = getelementptr inbounds nuw i8, ptr %2594, i64 5568
  store <8 x double> %2735, ptr %2737, align 64, !tbaa !26, !noalias !101
  %2738 = fmul <8 x double> %2589, %2690
  %2739 = fmul <8 x double> %2589, %2726
  %2740 = icmp eq <8 x i64> %2729, zeroinitializer
  %2741 = select <8 x i1> %2740, <8 x double> zeroinitializer, <8 x double> %2739
  %2742 = select <8 x i1> %2723, <8 x double> %2738, <8 x double> %2741
  %2743 = getelementptr inbounds nuw i8, ptr %2594, i64 5696
  store <8 x double> %2742, ptr %2743, align 64, !tbaa !26, !noalias !101
  %2744 = load i64, ptr %119, align 16, !tbaa !21, !noalias !101
  %2745 = sitofp i64 %2744 to double
  %2746 = insertelement <8 x double> poison, double %2745, i64 0
  %2747 = shufflevector <8 x double> %2746, <8 x double> poison, <8 x i32> zeroinitializer
  %2748 = select <8 x i1> %2733, <8 x double> %2747, <8 x double> %2689
  %2749 = getelementptr inbounds nuw i8, ptr %2594, i64 5760
  store <8 x double> %2748, ptr %2749, align 64, !tbaa !26, !noalias !101
  %2750 = add nuw nsw i64 %2592, 1
  %2751 = load i64, ptr %144, align 8, !tbaa !20, !noalias !101
  %2752 = icmp slt i64 %2750, %2751
  br i1 %2752, label %2591, label %2753, !llvm.loop !100

2753:                                             ; preds = %2688, %2548
  %2754 = phi i64 [ %2584, %2548 ], [ %2751, %2688 ]
  %2755 = icmp sgt i64 %2754, 0
  br i1 %2755, label %2906, label %2756

2756:                                             ; preds = %2753, %2585
  %2757 = load <8 x double>, ptr %151, align 64, !tbaa !26
  br label %2763

2758:                                             ; preds = %2978
  %2759 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %2760 = icmp sgt i64 %3002, 0
  br i1 %2760, label %2761, label %2763

2761:                                             ; preds = %2758
  %2762 = load ptr, ptr %129, align 8, !tbaa !28
  br label %2884

2763:                                             ; preds = %2884, %2756, %2758
  %2764 = phi <8 x double> [ %2759, %2758 ], [ %2757, %2756 ], [ %2759, %2884 ]
  %2765 = phi <8 x double> [ zeroinitializer, %2758 ], [ zeroinitializer, %2756 ], [ %2903, %2884 ]
  %2766 = phi <8 x double> [ zeroinitializer, %2758 ], [ zeroinitializer, %2756 ], [ %2898, %2884 ]
  %2767 = extractelement <8 x double> %2766, i64 0
  %2768 = extractelement <8 x double> %2766, i64 1
  %2769 = fadd double %2767, %2768
  %2770 = extractelement <8 x double> %2766, i64 2
  %2771 = fadd double %2769, %2770
  %2772 = extractelement <8 x double> %2766, i64 3
  %2773 = fadd double %2771, %2772
  %2774 = extractelement <8 x double> %2766, i64 4
  %2775 = fadd double %2773, %2774
  %2776 = extractelement <8 x double> %2766, i64 5
  %2777 = fadd double %2775, %2776
  %2778 = extractelement <8 x double> %2766, i64 6
  %2779 = fadd double %2777, %2778
  %2780 = extractelement <8 x double> %2766, i64 7
  %2781 = fadd double %2779, %2780
  %2782 = insertelement <8 x double> poison, double %2781, i64 0
  %2783 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2784 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2785 = fsub <8 x double> %2764, %2784
  %2786 = extractelement <8 x double> %2765, i64 0
  %2787 = extractelement <8 x double> %2765, i64 1
  %2788 = fadd double %2786, %2787
  %2789 = extractelement <8 x double> %2765, i64 2
  %2790 = fadd double %2788, %2789
  %2791 = extractelement <8 x double> %2765, i64 3
  %2792 = fadd double %2790, %2791
  %2793 = extractelement <8 x double> %2765, i64 4
  %2794 = fadd double %2792, %2793
  %2795 = extractelement <8 x double> %2765, i64 5
  %2796 = fadd double %2794, %2795
  %2797 = extractelement <8 x double> %2765, i64 6
  %2798 = fadd double %2796, %2797
  %2799 = extractelement <8 x double> %2765, i64 7
  %2800 = fadd double %2798, %2799
  %2801 = shufflevector <8 x double> %2782, <8 x double> poison, <8 x i32> zeroinitializer
  %2802 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2783, <8 x double> %2785, <8 x double> %2801)
  %2803 = insertelement <8 x double> poison, double %2800, i64 0
  %2804 = shufflevector <8 x double> %2803, <8 x double> poison, <8 x i32> zeroinitializer
  %2805 = fadd <8 x double> %2783, %2804
  store <8 x double> %2802, ptr %156, align 64, !tbaa !26
  %2806 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2807 = fcmp ule <8 x double> %2806, zeroinitializer
  %2808 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %2809 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2806, <8 x double> splat (double 5.000000e-01), <8 x double> %2808)
  %2810 = fsub <8 x double> %2809, %2764
  %2811 = fcmp ogt <8 x double> %2806, splat (double 1.000000e-30)
  %2812 = select <8 x i1> %2811, <8 x double> %2806, <8 x double> splat (double 1.000000e-30)
  %2813 = fdiv <8 x double> %2810, %2812
  %2814 = fcmp ogt <8 x double> %2813, zeroinitializer
  %2815 = select <8 x i1> %2814, <8 x double> %2813, <8 x double> zeroinitializer
  %2816 = fcmp olt <8 x double> %2815, splat (double 1.000000e+00)
  %2817 = select <8 x i1> %2816, <8 x double> %2815, <8 x double> splat (double 1.000000e+00)
  %2818 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %2819 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %2820 = icmp eq <8 x i64> %2819, zeroinitializer
  %2821 = select <8 x i1> %2820, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %2822 = select <8 x i1> %2807, <8 x double> %2821, <8 x double> %2817
  %2823 = fmul <8 x double> %2818, %2822
  %2824 = fcmp ule <8 x double> %2823, zeroinitializer
  %2825 = fcmp uge <8 x double> %2823, %2818
  %2826 = or <8 x i1> %2824, %2825
  %2827 = or <8 x i1> %2807, %2826
  %2828 = fdiv <8 x double> %2818, %2812
  %2829 = select <8 x i1> %2827, <8 x double> zeroinitializer, <8 x double> %2828
  %2830 = fadd <8 x double> %2805, %2829
  %2831 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %2832 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %2833 = fmul <8 x double> %2764, %2832
  %2834 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %2835 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %2836 = fmul <8 x double> %2835, splat (double 5.000000e-01)
  %2837 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2836, <8 x double> %2764, <8 x double> %2834)
  %2838 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %2839 = fmul <8 x double> %2764, %2838
  %2840 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2833, <8 x double> %2837, <8 x double> %2839)
  %2841 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %2842 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %2843 = fmul <8 x double> %2832, %2842
  %2844 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2836, <8 x double> %2842, <8 x double> %2834)
  %2845 = fmul <8 x double> %2838, %2842
  %2846 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2843, <8 x double> %2844, <8 x double> %2845)
  %2847 = fmul <8 x double> %2841, %2846
  %2848 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2831, <8 x double> %2840, <8 x double> %2847)
  %2849 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %2850 = load <8 x double>, ptr %153, align 64, !tbaa !26
  %2851 = fmul <8 x double> %2832, %2850
  %2852 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2836, <8 x double> %2850, <8 x double> %2834)
  %2853 = fmul <8 x double> %2838, %2850
  %2854 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2851, <8 x double> %2852, <8 x double> %2853)
  %2855 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2849, <8 x double> %2854, <8 x double> %2848)
  %2856 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2835, <8 x double> %2764, <8 x double> %2834)
  %2857 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2832, <8 x double> %2856, <8 x double> %2838)
  %2858 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %2859 = fcmp une <8 x double> %2858, zeroinitializer
  %2860 = fadd <8 x double> %2802, %2855
  %2861 = fsub <8 x double> %2860, %2823
  %2862 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2831, <8 x double> %2857, <8 x double> %2830)
  %2863 = fdiv <8 x double> %2861, %2862
  %2864 = fsub <8 x double> %2764, %2863
  %2865 = select <8 x i1> %2859, <8 x double> %2764, <8 x double> %2864
  store <8 x double> %2865, ptr %151, align 64, !tbaa !26
  %2866 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2867 = fneg <8 x double> %2841
  %2868 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2867, <8 x double> %2866, <8 x double> %2823)
  %2869 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2870 = fneg <8 x double> %2849
  %2871 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2870, <8 x double> %2869, <8 x double> %2868)
  %2872 = fdiv <8 x double> %2871, %2831
  %2873 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2874 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2867, <8 x double> %2873, <8 x double> %2802)
  %2875 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2876 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2870, <8 x double> %2875, <8 x double> %2874)
  %2877 = fdiv <8 x double> %2876, %2831
  %2878 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2879 = select <8 x i1> %2859, <8 x double> %2878, <8 x double> %2872
  store <8 x double> %2879, ptr %201, align 64, !tbaa !26
  %2880 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2881 = select <8 x i1> %2859, <8 x double> %2880, <8 x double> %2877
  store <8 x double> %2881, ptr %202, align 64, !tbaa !26
  %2882 = load i64, ptr %144, align 8, !tbaa !20
  %2883 = icmp sgt i64 %2882, 0
  br i1 %2883, label %3004, label %3267

2884:                                             ; preds = %2761, %2884
  %2885 = phi <8 x double> [ zeroinitializer, %2761 ], [ %2898, %2884 ]
  %2886 = phi <8 x double> [ zeroinitializer, %2761 ], [ %2903, %2884 ]
  %2887 = phi i64 [ 0, %2761 ], [ %2904, %2884 ]
  %2888 = getelementptr inbounds nuw %struct.Piece, ptr %2762, i64 %2887
  %2889 = getelementptr inbounds nuw i8, ptr %2888, i64 7488
  %2890 = load <8 x i64>, ptr %2889, align 64, !tbaa !26
  %2891 = getelementptr inbounds nuw i8, ptr %2888, i64 128
  %2892 = load <8 x double>, ptr %2891, align 64, !tbaa !26
  %2893 = getelementptr inbounds nuw i8, ptr %2888, i64 6336
  %2894 = load <8 x double>, ptr %2893, align 64, !tbaa !26
  %2895 = fmul <8 x double> %2892, %2894
  %2896 = icmp eq <8 x i64> %2890, zeroinitializer
  %2897 = select <8 x i1> %2896, <8 x double> %2895, <8 x double> zeroinitializer
  %2898 = fadd <8 x double> %2885, %2897
  %2899 = getelementptr inbounds nuw i8, ptr %2888, i64 6208
  %2900 = load <8 x double>, ptr %2899, align 64, !tbaa !26
  %2901 = fmul <8 x double> %2892, %2900
  %2902 = select <8 x i1> %2896, <8 x double> %2901, <8 x double> zeroinitializer
  %2903 = fadd <8 x double> %2886, %2902
  %2904 = add nuw nsw i64 %2887, 1
  %2905 = icmp eq i64 %2904, %3002
  br i1 %2905, label %2763, label %2884, !llvm.loop !107

2906:                                             ; preds = %2753, %2978
  %2907 = phi i64 [ %3001, %2978 ], [ 0, %2753 ]
  %2908 = load ptr, ptr %129, align 8, !tbaa !28
  %2909 = getelementptr inbounds nuw %struct.Piece, ptr %2908, i64 %2907
  %2910 = getelementptr inbounds nuw i8, ptr %2909, i64 5568
  %2911 = load <8 x double>, ptr %2910, align 64, !tbaa !26
  %2912 = getelementptr inbounds nuw i8, ptr %2909, i64 5760
  %2913 = load <8 x double>, ptr %2912, align 64, !tbaa !26
  %2914 = getelementptr inbounds nuw i8, ptr %2909, i64 7608
  %2915 = load ptr, ptr %2914, align 8, !tbaa !74
  %2916 = getelementptr inbounds nuw i8, ptr %2909, i64 7616
  %2917 = load ptr, ptr %2916, align 64, !tbaa !75
  %2918 = getelementptr inbounds nuw i8, ptr %2909, i64 7560
  %2919 = load ptr, ptr %2918, align 8, !tbaa !56
  %2920 = load i64, ptr %119, align 16, !tbaa !21
  %2921 = icmp sgt i64 %2920, 0
  br i1 %2921, label %2937, label %2922

2922:                                             ; preds = %2937, %2906
  %2923 = getelementptr inbounds nuw i8, ptr %2909, i64 7360
  %2924 = load <8 x i64>, ptr %2923, align 64, !tbaa !26
  %2925 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2924)
  %2926 = icmp eq i64 %2925, 0
  %2927 = load i64, ptr %120, align 8, !tbaa !22
  %2928 = icmp sgt i64 %2927, 0
  br i1 %2926, label %2934, label %2929

2929:                                             ; preds = %2922
  br i1 %2928, label %2930, label %2978

2930:                                             ; preds = %2929
  %2931 = getelementptr inbounds nuw i8, ptr %2909, i64 7712
  %2932 = getelementptr inbounds nuw i8, ptr %2909, i64 7720
  %2933 = getelementptr inbounds nuw i8, ptr %2909, i64 7680
  br label %2953

2934:                                             ; preds = %2922
  br i1 %2928, label %2935, label %2978

2935:                                             ; preds = %2934
  %2936 = getelementptr inbounds nuw i8, ptr %2909, i64 7680
  br label %2971

2937:                                             ; preds = %2906, %2937
  %2938 = phi <8 x double> [ %2950, %2937 ], [ %2911, %2906 ]
  %2939 = phi i64 [ %2940, %2937 ], [ %2920, %2906 ]
  %2940 = add nsw i64 %2939, -1
  %2941 = uitofp nneg i64 %2940 to double
  %2942 = insertelement <8 x double> poison, double %2941, i64 0
  %2943 = shufflevector <8 x double> %2942, <8 x double> poison, <8 x i32> zeroinitializer
  %2944 = fcmp ugt <8 x double> %2913, %2943
  %2945 = getelementptr inbounds nuw <8 x double>, ptr %2915, i64 %2940
  %2946 = load <8 x double>, ptr %2945, align 64, !tbaa !26
  %2947 = getelementptr inbounds nuw <8 x double>, ptr %2917, i64 %2940
  %2948 = load <8 x double>, ptr %2947, align 64, !tbaa !26
  %2949 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2948, <8 x double> %2938, <8 x double> %2946)
  %2950 = select <8 x i1> %2944, <8 x double> %2949, <8 x double> %2911
  %2951 = getelementptr inbounds nuw <8 x double>, ptr %2919, i64 %2940
  store <8 x double> %2950, ptr %2951, align 64, !tbaa !26
  %2952 = icmp samesign ugt i64 %2939, 1
  br i1 %2952, label %2937, label %2922, !llvm.loop !108

2953:                                             ; preds = %2930, %2953
  %2954 = phi i64 [ 0, %2930 ], [ %2968, %2953 ]
  %2955 = phi <8 x double> [ %2911, %2930 ], [ %2965, %2953 ]
  %2956 = load <8 x i64>, ptr %2923, align 64, !tbaa !26
  %2957 = load ptr, ptr %2931, align 32, !tbaa !80
  %2958 = getelementptr inbounds nuw <8 x double>, ptr %2957, i64 %2954
  %2959 = load <8 x double>, ptr %2958, align 64, !tbaa !26
  %2960 = load ptr, ptr %2932, align 8, !tbaa !81
  %2961 = getelementptr inbounds nuw <8 x double>, ptr %2960, i64 %2954
  %2962 = load <8 x double>, ptr %2961, align 64, !tbaa !26
  %2963 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2962, <8 x double> %2955, <8 x double> %2959)
  %2964 = icmp eq <8 x i64> %2956, zeroinitializer
  %2965 = select <8 x i1> %2964, <8 x double> %2911, <8 x double> %2963
  %2966 = load ptr, ptr %2933, align 64, !tbaa !109
  %2967 = getelementptr inbounds nuw <8 x double>, ptr %2966, i64 %2954
  store <8 x double> %2965, ptr %2967, align 64, !tbaa !26
  %2968 = add nuw nsw i64 %2954, 1
  %2969 = load i64, ptr %120, align 8, !tbaa !22
  %2970 = icmp slt i64 %2968, %2969
  br i1 %2970, label %2953, label %2978, !llvm.loop !110

2971:                                             ; preds = %2935, %2971
  %2972 = phi i64 [ 0, %2935 ], [ %2975, %2971 ]
  %2973 = load ptr, ptr %2936, align 64, !tbaa !109
  %2974 = getelementptr inbounds nuw <8 x double>, ptr %2973, i64 %2972
  store <8 x double> %2911, ptr %2974, align 64, !tbaa !26
  %2975 = add nuw nsw i64 %2972, 1
  %2976 = load i64, ptr %120, align 8, !tbaa !22
  %2977 = icmp slt i64 %2975, %2976
  br i1 %2977, label %2971, label %2978, !llvm.loop !111

2978:                                             ; preds = %2953, %2971, %2929, %2934
  %2979 = phi <8 x double> [ %2911, %2934 ], [ %2911, %2929 ], [ %2911, %2971 ], [ %2965, %2953 ]
  %2980 = load <8 x i64>, ptr %2923, align 64, !tbaa !26
  %2981 = getelementptr inbounds nuw i8, ptr %2909, i64 6272
  %2982 = load <8 x double>, ptr %2981, align 64, !tbaa !26
  %2983 = icmp eq <8 x i64> %2980, zeroinitializer
  %2984 = select <8 x i1> %2983, <8 x double> zeroinitializer, <8 x double> %2982
  %2985 = fsub <8 x double> splat (double 1.000000e+00), %2984
  %2986 = getelementptr inbounds nuw i8, ptr %2909, i64 5504
  %2987 = load <8 x double>, ptr %2986, align 64, !tbaa !26
  %2988 = fmul <8 x double> %2984, %2987
  %2989 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2985, <8 x double> %2979, <8 x double> %2988)
  %2990 = getelementptr inbounds nuw i8, ptr %2909, i64 6464
  store <8 x double> %2989, ptr %2990, align 64, !tbaa !26
  %2991 = getelementptr inbounds nuw i8, ptr %2909, i64 6208
  %2992 = load <8 x double>, ptr %2991, align 64, !tbaa !26
  %2993 = fsub <8 x double> %2987, %2979
  %2994 = fmul <8 x double> %2993, %2992
  %2995 = getelementptr inbounds nuw i8, ptr %2909, i64 6336
  store <8 x double> %2994, ptr %2995, align 64, !tbaa !26
  %2996 = getelementptr inbounds nuw i8, ptr %2909, i64 3200
  %2997 = load <8 x double>, ptr %2996, align 64, !tbaa !26
  %2998 = fdiv <8 x double> %2994, %2997
  %2999 = fsub <8 x double> %2987, %2998
  %3000 = getelementptr inbounds nuw i8, ptr %2909, i64 6400
  store <8 x double> %2999, ptr %3000, align 64, !tbaa !26
  %3001 = add nuw nsw i64 %2907, 1
  %3002 = load i64, ptr %144, align 8, !tbaa !20
  %3003 = icmp slt i64 %3001, %3002
  br i1 %3003, label %2906, label %2758, !llvm.loop !112

3004:                                             ; preds = %2763, %3222
  %3005 = phi i64 [ %3264, %3222 ], [ 0, %2763 ]
  %3006 = phi <8 x double> [ %3263, %3222 ], [ zeroinitializer, %2763 ]
  %3007 = load ptr, ptr %129, align 8, !tbaa !28
  %3008 = getelementptr inbounds nuw %struct.Piece, ptr %3007, i64 %3005
  %3009 = getelementptr inbounds nuw i8, ptr %3008, i64 5632
  %3010 = load <8 x double>, ptr %3009, align 64, !tbaa !26
  %3011 = getelementptr inbounds nuw i8, ptr %3008, i64 5696
  %3012 = load <8 x double>, ptr %3011, align 64, !tbaa !26
  %3013 = fadd <8 x double> %3010, %3012
  %3014 = getelementptr inbounds nuw i8, ptr %3008, i64 5568
  %3015 = load <8 x double>, ptr %3014, align 64, !tbaa !26
  %3016 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %3017 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3016, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3018 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3016, <8 x double> %3017, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3019 = getelementptr inbounds nuw i8, ptr %3008, i64 5312
  %3020 = load <8 x double>, ptr %3019, align 64, !tbaa !26
  %3021 = getelementptr inbounds nuw i8, ptr %3008, i64 4032
  %3022 = load <8 x double>, ptr %3021, align 64, !tbaa !26
  %3023 = fneg <8 x double> %3020
  %3024 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3023, <8 x double> %3022, <8 x double> %3013)
  %3025 = getelementptr inbounds nuw i8, ptr %3008, i64 5376
  %3026 = load <8 x double>, ptr %3025, align 64, !tbaa !26
  %3027 = getelementptr inbounds nuw i8, ptr %3008, i64 4800
  %3028 = load <8 x double>, ptr %3027, align 64, !tbaa !26
  %3029 = fneg <8 x double> %3026
  %3030 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3029, <8 x double> %3028, <8 x double> %3024)
  %3031 = getelementptr inbounds nuw i8, ptr %3008, i64 5248
  %3032 = load <8 x double>, ptr %3031, align 64, !tbaa !26
  %3033 = fdiv <8 x double> %3030, %3032
  %3034 = getelementptr inbounds nuw i8, ptr %3008, i64 1600
  %3035 = load <8 x double>, ptr %3034, align 64, !tbaa !26
  %3036 = fsub <8 x double> %3035, %3033
  %3037 = getelementptr inbounds nuw i8, ptr %3008, i64 3904
  %3038 = load <8 x double>, ptr %3037, align 64, !tbaa !26
  %3039 = getelementptr inbounds nuw i8, ptr %3008, i64 7168
  %3040 = load <8 x double>, ptr %3039, align 64, !tbaa !26
  %3041 = fsub <8 x double> %3038, %3040
  %3042 = getelementptr inbounds nuw i8, ptr %3008, i64 6784
  %3043 = load <8 x double>, ptr %3042, align 64, !tbaa !26
  %3044 = getelementptr inbounds nuw i8, ptr %3008, i64 1280
  %3045 = load <8 x double>, ptr %3044, align 64, !tbaa !26
  %3046 = fmul <8 x double> %3043, %3045
  %3047 = getelementptr inbounds nuw i8, ptr %3008, i64 6464
  %3048 = load <8 x double>, ptr %3047, align 64, !tbaa !26
  %3049 = fsub <8 x double> %3048, %3015
  %3050 = fmul <8 x double> %3046, %3049
  %3051 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3018, <8 x double> %3013, <8 x double> %3050)
  %3052 = fsub <8 x double> %3036, %3041
  %3053 = getelementptr inbounds nuw i8, ptr %3008, i64 2944
  %3054 = getelementptr inbounds nuw i8, ptr %3008, i64 3072
  %3055 = load <8 x double>, ptr %3054, align 64, !tbaa !26
  %3056 = fsub <8 x double> %3052, %3055
  %3057 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3056)
  %3058 = getelementptr inbounds nuw i8, ptr %3008, i64 832
  %3059 = load <8 x double>, ptr %3058, align 64, !tbaa !26
  %3060 = fdiv <8 x double> %3057, %3059
  %3061 = getelementptr inbounds nuw i8, ptr %3008, i64 7360
  %3062 = load <8 x i64>, ptr %3061, align 64, !tbaa !26
  %3063 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3062)
  %3064 = icmp eq i64 %3063, 0
  br i1 %3064, label %3222, label %3065

3065:                                             ; preds = %3004
  %3066 = getelementptr inbounds nuw i8, ptr %3008, i64 3776
  %3067 = load <8 x double>, ptr %3066, align 64, !tbaa !26
  %3068 = fcmp ogt <8 x double> %3041, %3036
  %3069 = getelementptr inbounds nuw i8, ptr %3008, i64 7296
  %3070 = load <8 x double>, ptr %3069, align 64, !tbaa !26
  %3071 = fcmp oeq <8 x double> %3070, zeroinitializer
  %3072 = select <8 x i1> %3071, <8 x i1> %3068, <8 x i1> zeroinitializer
  %3073 = select <8 x i1> %3072, <8 x i64> %3062, <8 x i64> zeroinitializer
  %3074 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3073)
  %3075 = icmp eq i64 %3074, 0
  br i1 %3075, label %3146, label %3076

3076:                                             ; preds = %3065
  %3077 = fsub <8 x double> %3041, %3036
  %3078 = fdiv <8 x double> %3077, %3059
  %3079 = getelementptr inbounds nuw i8, ptr %3008, i64 7592
  %3080 = load ptr, ptr %3079, align 8, !tbaa !63
  %3081 = load i64, ptr %119, align 16, !tbaa !21
  %3082 = add nsw i64 %3081, -1
  %3083 = getelementptr inbounds <8 x double>, ptr %3080, i64 %3082
  %3084 = load <8 x double>, ptr %3083, align 64, !tbaa !26
  %3085 = icmp sgt i64 %3081, 1
  br i1 %3085, label %3086, label %3138

3086:                                             ; preds = %3076
  %3087 = getelementptr inbounds nuw i8, ptr %3008, i64 7552
  %3088 = load i64, ptr %3087, align 64, !tbaa !31
  %3089 = getelementptr inbounds nuw i8, ptr %3008, i64 4416
  %3090 = getelementptr inbounds nuw i8, ptr %3008, i64 1536
  %3091 = getelementptr inbounds nuw i8, ptr %3008, i64 7648
  br label %3092

3092:                                             ; preds = %3086, %3135
  %3093 = phi <8 x double> [ %3067, %3086 ], [ %3130, %3135 ]
  %3094 = phi i64 [ %3082, %3086 ], [ %3136, %3135 ]
  %3095 = phi <8 x double> [ %3084, %3086 ], [ %3118, %3135 ]
  %3096 = phi <8 x i64> [ %3073, %3086 ], [ %3122, %3135 ]
  %3097 = phi <8 x double> [ %3078, %3086 ], [ %3129, %3135 ]
  %3098 = icmp slt i64 %3094, %3088
  br i1 %3098, label %3099, label %3105

3099:                                             ; preds = %3092
  %3100 = load ptr, ptr %3091, align 32, !tbaa !70
  %3101 = getelementptr inbounds nuw <8 x double>, ptr %3100, i64 %3094
  %3102 = load <8 x double>, ptr %3101, align 64, !tbaa !26
  %3103 = load <8 x double>, ptr %3090, align 64, !tbaa !26
  %3104 = fmul <8 x double> %3102, %3103
  br label %3113

3105:                                             ; preds = %3092
  %3106 = load <8 x double>, ptr %3089, align 64, !tbaa !26
  %3107 = load <8 x double>, ptr %3090, align 64, !tbaa !26
  %3108 = load ptr, ptr %3091, align 32, !tbaa !70
  %3109 = getelementptr inbounds nuw <8 x double>, ptr %3108, i64 %3094
  %3110 = load <8 x double>, ptr %3109, align 64, !tbaa !26
  %3111 = fsub <8 x double> %3106, %3107
  %3112 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3110, <8 x double> %3111, <8 x double> %3107)
  br label %3113

3113:                                             ; preds = %3099, %3105
  %3114 = phi <8 x double> [ %3104, %3099 ], [ %3112, %3105 ]
  %3115 = getelementptr inbounds nuw <8 x double>, ptr %3080, i64 %3094
  %3116 = load <8 x double>, ptr %3115, align 64, !tbaa !26
  %3117 = icmp eq <8 x i64> %3096, zeroinitializer
  %3118 = select <8 x i1> %3117, <8 x double> %3095, <8 x double> %3116
  %3119 = fsub <8 x double> %3093, %3114
  %3120 = fmul <8 x double> %3119, %3118
  %3121 = fcmp olt <8 x double> %3120, %3097
  %3122 = select <8 x i1> %3121, <8 x i64> %3096, <8 x i64> zeroinitializer
  %3123 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3122)
  %3124 = icmp eq i64 %3123, 0
  br i1 %3124, label %3138, label %3125

3125:                                             ; preds = %3113
  %3126 = fneg <8 x double> %3118
  %3127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3126, <8 x double> %3119, <8 x double> %3097)
  %3128 = icmp eq <8 x i64> %3122, zeroinitializer
  %3129 = select <8 x i1> %3128, <8 x double> %3097, <8 x double> %3127
  %3130 = select <8 x i1> %3128, <8 x double> %3093, <8 x double> %3114
  %3131 = icmp eq i64 %3094, 1
  br i1 %3131, label %3132, label %3135

3132:                                             ; preds = %3125
  %3133 = load <8 x double>, ptr %3080, align 64, !tbaa !26
  %3134 = select <8 x i1> %3128, <8 x double> %3118, <8 x double> %3133
  br label %3138

3135:                                             ; preds = %3125
  %3136 = add nsw i64 %3094, -1
  %3137 = icmp sgt i64 %3094, 1
  br i1 %3137, label %3092, label %3138, !llvm.loop !113

3138:                                             ; preds = %3135, %3113, %3132, %3076
  %3139 = phi <8 x double> [ %3078, %3076 ], [ %3129, %3132 ], [ %3097, %3113 ], [ %3129, %3135 ]
  %3140 = phi <8 x double> [ %3067, %3076 ], [ %3130, %3132 ], [ %3093, %3113 ], [ %3130, %3135 ]
  %3141 = phi <8 x double> [ %3084, %3076 ], [ %3134, %3132 ], [ %3118, %3113 ], [ %3118, %3135 ]
  %3142 = fdiv <8 x double> %3139, %3141
  %3143 = fsub <8 x double> %3140, %3142
  %3144 = icmp eq <8 x i64> %3073, zeroinitializer
  %3145 = select <8 x i1> %3144, <8 x double> %3067, <8 x double> %3143
  br label %3146

3146:                                             ; preds = %3138, %3065
  %3147 = phi <8 x double> [ %3145, %3138 ], [ %3067, %3065 ]
  %3148 = load <8 x double>, ptr %3053, align 64, !tbaa !26
  %3149 = getelementptr inbounds nuw i8, ptr %3008, i64 2560
  %3150 = load <8 x double>, ptr %3149, align 64, !tbaa !26
  %3151 = getelementptr inbounds nuw i8, ptr %3008, i64 2624
  %3152 = load <8 x double>, ptr %3151, align 64, !tbaa !26
  %3153 = getelementptr inbounds nuw i8, ptr %3008, i64 2688
  %3154 = load <8 x double>, ptr %3153, align 64, !tbaa !26
  %3155 = getelementptr inbounds nuw i8, ptr %3008, i64 2752
  %3156 = load <8 x double>, ptr %3155, align 64, !tbaa !26
  %3157 = load <8 x double>, ptr %3008, align 64, !tbaa !26
  %3158 = fmul <8 x double> %3157, splat (double 1.000000e-09)
  br label %3159

3159:                                             ; preds = %3146, %3159
  %3160 = phi <8 x i64> [ splat (i64 -1), %3146 ], [ %3177, %3159 ]
  %3161 = phi i32 [ 0, %3146 ], [ %3178, %3159 ]
  %3162 = phi <8 x double> [ %3148, %3146 ], [ %3174, %3159 ]
  %3163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3162, <8 x double> %3156, <8 x double> %3154)
  %3164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3162, <8 x double> %3163, <8 x double> %3152)
  %3165 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3162, <8 x double> %3164, <8 x double> %3150)
  %3166 = fsub <8 x double> %3165, %3147
  %3167 = fmul <8 x double> %3162, splat (double 3.000000e+00)
  %3168 = fmul <8 x double> %3167, %3156
  %3169 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3154, <8 x double> splat (double 2.000000e+00), <8 x double> %3168)
  %3170 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3162, <8 x double> %3169, <8 x double> %3152)
  %3171 = fdiv <8 x double> %3166, %3170
  %3172 = fsub <8 x double> %3162, %3171
  %3173 = icmp eq <8 x i64> %3160, zeroinitializer
  %3174 = select <8 x i1> %3173, <8 x double> %3162, <8 x double> %3172
  %3175 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3171)
  %3176 = fcmp oge <8 x double> %3175, %3158
  %3177 = select <8 x i1> %3176, <8 x i64> %3160, <8 x i64> zeroinitializer
  %3178 = add nuw nsw i32 %3161, 1
  %3179 = icmp samesign ult i32 %3161, 3
  %3180 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3177)
  %3181 = icmp ne i64 %3180, 0
  %3182 = select i1 %3179, i1 %3181, i1 false
  br i1 %3182, label %3159, label %3183, !llvm.loop !114

3183:                                             ; preds = %3159
  %3184 = fmul <8 x double> %3157, splat (double 2.800000e-01)
  %3185 = fcmp ogt <8 x double> %3174, %3184
  %3186 = select <8 x i1> %3185, <8 x double> %3174, <8 x double> %3184
  %3187 = fcmp olt <8 x double> %3186, %3157
  %3188 = select <8 x i1> %3187, <8 x double> %3186, <8 x double> %3157
  %3189 = fcmp olt <8 x double> %3041, %3036
  %3190 = icmp eq <8 x i64> %3062, zeroinitializer
  %3191 = select <8 x i1> %3190, <8 x i1> splat (i1 true), <8 x i1> %3189
  %3192 = select <8 x i1> %3191, <8 x double> %3041, <8 x double> %3036
  %3193 = fsub <8 x double> %3188, %3148
  %3194 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3193)
  %3195 = select <8 x i1> %3190, <8 x double> %3060, <8 x double> %3194
  %3196 = select <8 x i1> %3190, <8 x double> %3148, <8 x double> %3188
  store <8 x double> %3196, ptr %3053, align 64, !tbaa !26
  %3197 = getelementptr inbounds nuw i8, ptr %3008, i64 3008
  %3198 = load <8 x double>, ptr %3197, align 64, !tbaa !26
  %3199 = select <8 x i1> %3190, <8 x double> %3198, <8 x double> %3147
  store <8 x double> %3199, ptr %3197, align 64, !tbaa !26
  %3200 = getelementptr inbounds nuw i8, ptr %3008, i64 6720
  %3201 = load <8 x double>, ptr %3200, align 64, !tbaa !26
  %3202 = fmul <8 x double> %3201, splat (double 2.000000e+00)
  %3203 = getelementptr inbounds nuw i8, ptr %3008, i64 384
  %3204 = load <8 x double>, ptr %3203, align 64, !tbaa !26
  %3205 = getelementptr inbounds nuw i8, ptr %3008, i64 448
  %3206 = load <8 x double>, ptr %3205, align 64, !tbaa !26
  %3207 = getelementptr inbounds nuw i8, ptr %3008, i64 512
  %3208 = load <8 x double>, ptr %3207, align 64, !tbaa !26
  %3209 = fmul <8 x double> %3015, %3208
  %3210 = fmul <8 x double> %3209, splat (double 0x3FD5555555555555)
  %3211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3206, <8 x double> splat (double 5.000000e-01), <8 x double> %3210)
  %3212 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3015, <8 x double> %3211, <8 x double> %3204)
  %3213 = fmul <8 x double> %3015, %3212
  %3214 = getelementptr inbounds nuw i8, ptr %3008, i64 768
  %3215 = load <8 x double>, ptr %3214, align 64, !tbaa !26
  %3216 = fneg <8 x double> %3215
  %3217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3216, <8 x double> %3015, <8 x double> %3213)
  %3218 = fmul <8 x double> %3202, %3217
  %3219 = fsub <8 x double> %3051, %3218
  %3220 = select <8 x i1> %3190, <8 x double> %3051, <8 x double> %3219
  %3221 = fsub <8 x double> %3036, %3192
  br label %3222

3222:                                             ; preds = %3004, %3183
  %3223 = phi <8 x double> [ %3052, %3004 ], [ %3221, %3183 ]
  %3224 = phi <8 x double> [ %3060, %3004 ], [ %3195, %3183 ]
  %3225 = phi <8 x double> [ %3041, %3004 ], [ %3192, %3183 ]
  %3226 = phi <8 x double> [ %3051, %3004 ], [ %3220, %3183 ]
  store <8 x double> %3223, ptr %3054, align 64, !tbaa !26
  %3227 = getelementptr inbounds nuw i8, ptr %3008, i64 3136
  store <8 x double> %3225, ptr %3227, align 64, !tbaa !26
  %3228 = getelementptr inbounds nuw i8, ptr %3008, i64 3264
  store <8 x double> %3033, ptr %3228, align 64, !tbaa !26
  %3229 = getelementptr inbounds nuw i8, ptr %3008, i64 3456
  store <8 x double> %3010, ptr %3229, align 64, !tbaa !26
  %3230 = getelementptr inbounds nuw i8, ptr %3008, i64 3520
  store <8 x double> %3015, ptr %3230, align 64, !tbaa !26
  %3231 = getelementptr inbounds nuw i8, ptr %3008, i64 6976
  %3232 = load <8 x double>, ptr %3231, align 64, !tbaa !26
  %3233 = getelementptr inbounds nuw i8, ptr %3008, i64 7040
  %3234 = load <8 x double>, ptr %3233, align 64, !tbaa !26
  %3235 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3232, <8 x double> %3015, <8 x double> %3234)
  %3236 = getelementptr inbounds nuw i8, ptr %3008, i64 6336
  %3237 = load <8 x double>, ptr %3236, align 64, !tbaa !26
  %3238 = getelementptr inbounds nuw i8, ptr %3008, i64 4096
  %3239 = load <8 x double>, ptr %3238, align 64, !tbaa !26
  %3240 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3023, <8 x double> %3239, <8 x double> %3237)
  %3241 = getelementptr inbounds nuw i8, ptr %3008, i64 4864
  %3242 = load <8 x double>, ptr %3241, align 64, !tbaa !26
  %3243 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3029, <8 x double> %3242, <8 x double> %3240)
  %3244 = fdiv <8 x double> %3243, %3032
  %3245 = getelementptr inbounds nuw i8, ptr %3008, i64 3328
  store <8 x double> %3244, ptr %3245, align 64, !tbaa !26
  %3246 = getelementptr inbounds nuw i8, ptr %3008, i64 4160
  %3247 = load <8 x double>, ptr %3246, align 64, !tbaa !26
  %3248 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3023, <8 x double> %3247, <8 x double> %3226)
  %3249 = getelementptr inbounds nuw i8, ptr %3008, i64 4928
  %3250 = load <8 x double>, ptr %3249, align 64, !tbaa !26
  %3251 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3029, <8 x double> %3250, <8 x double> %3248)
  %3252 = fdiv <8 x double> %3251, %3032
  %3253 = getelementptr inbounds nuw i8, ptr %3008, i64 3392
  store <8 x double> %3252, ptr %3253, align 64, !tbaa !26
  %3254 = getelementptr inbounds nuw i8, ptr %3008, i64 4352
  %3255 = load <8 x double>, ptr %3254, align 64, !tbaa !26
  %3256 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3023, <8 x double> %3255, <8 x double> %3235)
  %3257 = getelementptr inbounds nuw i8, ptr %3008, i64 5120
  %3258 = load <8 x double>, ptr %3257, align 64, !tbaa !26
  %3259 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3029, <8 x double> %3258, <8 x double> %3256)
  %3260 = fdiv <8 x double> %3259, %3032
  %3261 = getelementptr inbounds nuw i8, ptr %3008, i64 3584
  store <8 x double> %3260, ptr %3261, align 64, !tbaa !26
  %3262 = fcmp ogt <8 x double> %3006, %3224
  %3263 = select <8 x i1> %3262, <8 x double> %3006, <8 x double> %3224
  %3264 = add nuw nsw i64 %3005, 1
  %3265 = load i64, ptr %144, align 8, !tbaa !20
  %3266 = icmp slt i64 %3264, %3265
  br i1 %3266, label %3004, label %3267, !llvm.loop !115

3267:                                             ; preds = %3222, %2763
  %3268 = phi i64 [ %2882, %2763 ], [ %3265, %3222 ]
  %3269 = phi <8 x double> [ zeroinitializer, %2763 ], [ %3263, %3222 ]
  %3270 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %3269)
  %3271 = insertelement <8 x double> poison, double %3270, i64 0
  %3272 = shufflevector <8 x double> %3271, <8 x double> poison, <8 x i32> zeroinitializer
  %3273 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3274 = fadd <8 x double> %3273, splat (double 1.000000e+00)
  store <8 x double> %3274, ptr %166, align 64, !tbaa !26
  %3275 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %3276 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %3277 = fcmp olt <8 x double> %3272, %3276
  %3278 = load i64, ptr %204, align 32, !tbaa !24
  %3279 = sitofp i64 %3278 to double
  %3280 = insertelement <8 x double> poison, double %3279, i64 0
  %3281 = shufflevector <8 x double> %3280, <8 x double> poison, <8 x i32> zeroinitializer
  %3282 = fcmp oge <8 x double> %3274, %3281
  %3283 = or <8 x i1> %3277, %3282
  %3284 = select <8 x i1> %3283, <8 x i64> %3275, <8 x i64> zeroinitializer
  store <8 x i64> %3284, ptr %133, align 64, !tbaa !26
  %3285 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3284)
  %3286 = icmp eq i64 %3285, 0
  br i1 %3286, label %512, label %3287, !llvm.loop !53

3287:                                             ; preds = %3267
  %3288 = icmp sgt i64 %3268, 0
  br i1 %3288, label %3289, label %3291

3289:                                             ; preds = %3287
  %3290 = icmp eq <8 x i64> %3284, zeroinitializer
  br label %3599

3291:                                             ; preds = %3647, %3287
  %3292 = phi i64 [ %3268, %3287 ], [ %3653, %3647 ]
  %3293 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3294 = fadd <8 x double> %3293, splat (double 1.000000e+00)
  %3295 = icmp eq <8 x i64> %3284, zeroinitializer
  %3296 = select <8 x i1> %3295, <8 x double> %3293, <8 x double> %3294
  store <8 x double> %3296, ptr %205, align 64, !tbaa !26
  %3297 = fcmp ogt <8 x double> %3296, splat (double 4.000000e+01)
  %3298 = select <8 x i1> %3297, <8 x i64> %3284, <8 x i64> zeroinitializer
  %3299 = xor <8 x i64> %3298, %3284
  %3300 = load <8 x double>, ptr %127, align 64, !tbaa !26
  %3301 = fadd <8 x double> %3300, splat (double 1.000000e+00)
  %3302 = icmp eq <8 x i64> %3298, zeroinitializer
  %3303 = select <8 x i1> %3302, <8 x double> %3300, <8 x double> %3301
  store <8 x double> %3303, ptr %127, align 64, !tbaa !26
  %3304 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %3305 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %3306 = fsub <8 x double> %3304, %3305
  %3307 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3306)
  %3308 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3309 = fmul <8 x double> %3308, splat (double 1.500000e+00)
  %3310 = fcmp ogt <8 x double> %3307, %3309
  %3311 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %3312 = fcmp ogt <8 x double> %3311, splat (double 2.000000e-03)
  %3313 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %3314 = fcmp oeq <8 x double> %3313, zeroinitializer
  %3315 = and <8 x i1> %3310, %3314
  %3316 = and <8 x i1> %3312, %3315
  %3317 = fdiv <8 x double> %3308, %3307
  %3318 = select <8 x i1> %3316, <8 x i64> %3299, <8 x i64> zeroinitializer
  %3319 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %3320 = fcmp ogt <8 x double> %3319, %3311
  %3321 = select <8 x i1> %3320, <8 x double> %3319, <8 x double> %3311
  %3322 = select <8 x i1> %3316, <8 x double> zeroinitializer, <8 x double> %3321
  %3323 = icmp eq <8 x i64> %3318, zeroinitializer
  %3324 = select <8 x i1> %3323, <8 x double> %3319, <8 x double> %3322
  store <8 x double> %3324, ptr %143, align 64, !tbaa !26
  %3325 = fcmp ogt <8 x double> %3317, splat (double 5.000000e-02)
  %3326 = select <8 x i1> %3325, <8 x double> %3317, <8 x double> splat (double 5.000000e-02)
  %3327 = fcmp olt <8 x double> %3326, splat (double 0x3FEE666666666666)
  %3328 = select <8 x i1> %3327, <8 x double> %3326, <8 x double> splat (double 0x3FEE666666666666)
  %3329 = fmul <8 x double> %3311, %3328
  %3330 = fcmp ogt <8 x double> %3329, splat (double 0x3EB0C6F7A0B5ED8D)
  %3331 = select <8 x i1> %3330, <8 x double> %3329, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3332 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %3333 = select <8 x i1> %3323, <8 x double> %3332, <8 x double> %3331
  store <8 x double> %3333, ptr %139, align 64, !tbaa !26
  %3334 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %3335 = fadd <8 x double> %3334, splat (double 1.000000e+00)
  %3336 = select <8 x i1> %3323, <8 x double> %3334, <8 x double> %3335
  store <8 x double> %3336, ptr %124, align 64, !tbaa !26
  %3337 = xor <8 x i64> %3318, %3299
  %3338 = icmp sgt i64 %3292, 0
  br i1 %3338, label %3339, label %3429

3339:                                             ; preds = %3291
  %3340 = load ptr, ptr %129, align 8, !tbaa !28
  %3341 = fcmp ogt <8 x double> %3311, splat (double 0x3E7AD7F29ABCAF48)
  %3342 = fcmp ogt <8 x double> %3311, splat (double 1.000000e-05)
  %3343 = fcmp ogt <8 x double> %3311, splat (double 1.000000e-04)
  br label %3344

3344:                                             ; preds = %3339, %3344
  %3345 = phi i64 [ 0, %3339 ], [ %3427, %3344 ]
  %3346 = phi <8 x double> [ splat (double 1.000000e+00), %3339 ], [ %3426, %3344 ]
  %3347 = phi <8 x i64> [ zeroinitializer, %3339 ], [ %3374, %3344 ]
  %3348 = phi <8 x i64> [ zeroinitializer, %3339 ], [ %3423, %3344 ]
  %3349 = getelementptr inbounds nuw %struct.Piece, ptr %3340, i64 %3345
  %3350 = getelementptr inbounds nuw i8, ptr %3349, i64 3072
  %3351 = load <8 x double>, ptr %3350, align 64, !tbaa !26
  %3352 = getelementptr inbounds nuw i8, ptr %3349, i64 3840
  %3353 = load <8 x double>, ptr %3352, align 64, !tbaa !26
  %3354 = getelementptr inbounds nuw i8, ptr %3349, i64 7360
  %3355 = load <8 x i64>, ptr %3354, align 64, !tbaa !26
  %3356 = xor <8 x i64> %3355, splat (i64 -1)
  %3357 = getelementptr inbounds nuw i8, ptr %3349, i64 896
  %3358 = load <8 x double>, ptr %3357, align 64, !tbaa !26
  %3359 = fmul <8 x double> %3358, splat (double 1.000000e-04)
  %3360 = fcmp ogt <8 x double> %3359, splat (double 0x3E7AD7F29ABCAF48)
  %3361 = fneg <8 x double> %3359
  %3362 = select <8 x i1> %3360, <8 x double> %3361, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3363 = fcmp olt <8 x double> %3351, %3362
  %3364 = select <8 x i1> %3363, <8 x i64> %3356, <8 x i64> zeroinitializer
  %3365 = fcmp ole <8 x double> %3353, zeroinitializer
  %3366 = select <8 x i1> %3365, <8 x i64> %3364, <8 x i64> zeroinitializer
  %3367 = getelementptr inbounds nuw i8, ptr %3349, i64 832
  %3368 = load <8 x double>, ptr %3367, align 64, !tbaa !26
  %3369 = fmul <8 x double> %3368, splat (double -3.000000e-07)
  %3370 = fcmp olt <8 x double> %3351, %3369
  %3371 = select <8 x i1> %3341, <8 x i1> %3370, <8 x i1> zeroinitializer
  %3372 = select <8 x i1> %3371, <8 x i64> %3366, <8 x i64> zeroinitializer
  %3373 = or <8 x i64> %3372, %3348
  %3374 = or <8 x i64> %3372, %3347
  %3375 = fcmp olt <8 x double> %3346, splat (double 3.000000e-01)
  %3376 = icmp eq <8 x i64> %3372, zeroinitializer
  %3377 = select <8 x i1> %3376, <8 x i1> splat (i1 true), <8 x i1> %3375
  %3378 = select <8 x i1> %3377, <8 x double> %3346, <8 x double> splat (double 3.000000e-01)
  %3379 = xor <8 x i64> %3366, splat (i64 -1)
  %3380 = and <8 x i64> %3364, %3379
  %3381 = select <8 x i1> %3342, <8 x i64> %3380, <8 x i64> zeroinitializer
  %3382 = fsub <8 x double> %3353, %3351
  %3383 = fdiv <8 x double> %3353, %3382
  %3384 = or <8 x i64> %3373, %3381
  %3385 = fcmp olt <8 x double> %3378, %3383
  %3386 = icmp eq <8 x i64> %3381, zeroinitializer
  %3387 = select <8 x i1> %3386, <8 x i1> splat (i1 true), <8 x i1> %3385
  %3388 = select <8 x i1> %3387, <8 x double> %3378, <8 x double> %3383
  %3389 = getelementptr inbounds nuw i8, ptr %3349, i64 3776
  %3390 = load <8 x double>, ptr %3389, align 64, !tbaa !26
  %3391 = getelementptr inbounds nuw i8, ptr %3349, i64 3008
  %3392 = load <8 x double>, ptr %3391, align 64, !tbaa !26
  %3393 = getelementptr inbounds nuw i8, ptr %3349, i64 7296
  %3394 = load <8 x double>, ptr %3393, align 64, !tbaa !26
  %3395 = fcmp oeq <8 x double> %3394, zeroinitializer
  %3396 = getelementptr inbounds nuw i8, ptr %3349, i64 1472
  %3397 = load <8 x double>, ptr %3396, align 64, !tbaa !26
  %3398 = fmul <8 x double> %3397, splat (double 0x3FEFF7CED916872B)
  %3399 = fcmp olt <8 x double> %3392, %3398
  %3400 = and <8 x i1> %3395, %3399
  %3401 = and <8 x i1> %3343, %3400
  %3402 = fsub <8 x double> %3390, %3397
  %3403 = fsub <8 x double> %3390, %3392
  %3404 = fdiv <8 x double> %3402, %3403
  %3405 = fcmp uge <8 x double> %3388, %3404
  %3406 = select <8 x i1> %3401, <8 x i1> %3405, <8 x i1> zeroinitializer
  %3407 = select <8 x i1> %3406, <8 x double> %3404, <8 x double> %3388
  %3408 = fcmp oeq <8 x double> %3394, splat (double 1.000000e+00)
  %3409 = getelementptr inbounds nuw i8, ptr %3349, i64 3264
  %3410 = load <8 x double>, ptr %3409, align 64, !tbaa !26
  %3411 = getelementptr inbounds nuw i8, ptr %3349, i64 1600
  %3412 = load <8 x double>, ptr %3411, align 64, !tbaa !26
  %3413 = fmul <8 x double> %3412, splat (double 1.000100e+00)
  %3414 = fcmp ogt <8 x double> %3410, %3413
  %3415 = and <8 x i1> %3408, %3414
  %3416 = and <8 x i1> %3343, %3415
  %3417 = getelementptr inbounds nuw i8, ptr %3349, i64 4032
  %3418 = load <8 x double>, ptr %3417, align 64, !tbaa !26
  %3419 = fsub <8 x double> %3412, %3418
  %3420 = fsub <8 x double> %3410, %3418
  %3421 = fdiv <8 x double> %3419, %3420
  %3422 = select <8 x i1> %3415, <8 x i1> %3343, <8 x i1> %3401
  %3423 = select <8 x i1> %3422, <8 x i64> splat (i64 -1), <8 x i64> %3384
  %3424 = fcmp uge <8 x double> %3407, %3421
  %3425 = select <8 x i1> %3416, <8 x i1> %3424, <8 x i1> zeroinitializer
  %3426 = select <8 x i1> %3425, <8 x double> %3421, <8 x double> %3407
  %3427 = add nuw nsw i64 %3345, 1
  %3428 = icmp eq i64 %3427, %3292
  br i1 %3428, label %3429, label %3344, !llvm.loop !116

3429:                                             ; preds = %3344, %3291
  %3430 = phi <8 x i64> [ zeroinitializer, %3291 ], [ %3423, %3344 ]
  %3431 = phi <8 x i64> [ zeroinitializer, %3291 ], [ %3374, %3344 ]
  %3432 = phi <8 x double> [ splat (double 1.000000e+00), %3291 ], [ %3426, %3344 ]
  %3433 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3430)
  %3434 = icmp eq i64 %3433, 0
  %3435 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3431)
  %3436 = icmp eq i64 %3435, 0
  %3437 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %3432)
  %3438 = insertelement <8 x double> poison, double %3437, i64 0
  %3439 = shufflevector <8 x double> %3438, <8 x double> poison, <8 x i32> zeroinitializer
  %3440 = select i1 %3434, <8 x i64> zeroinitializer, <8 x i64> %3337
  %3441 = fcmp ogt <8 x double> %3324, %3311
  %3442 = select <8 x i1> %3441, <8 x double> %3324, <8 x double> %3311
  %3443 = select i1 %3436, <8 x i1> splat (i1 true), <8 x i1> zeroinitializer
  %3444 = select <8 x i1> %3443, <8 x double> %3442, <8 x double> zeroinitializer
  %3445 = icmp eq <8 x i64> %3440, zeroinitializer
  %3446 = select <8 x i1> %3445, <8 x double> %3324, <8 x double> %3444
  %3447 = fcmp ogt <8 x double> %3439, splat (double 5.000000e-02)
  %3448 = select <8 x i1> %3447, <8 x double> %3439, <8 x double> splat (double 5.000000e-02)
  %3449 = fcmp olt <8 x double> %3448, splat (double 0x3FEE666666666666)
  %3450 = select <8 x i1> %3449, <8 x double> %3448, <8 x double> splat (double 0x3FEE666666666666)
  %3451 = fmul <8 x double> %3311, %3450
  %3452 = fcmp ogt <8 x double> %3451, splat (double 0x3EB0C6F7A0B5ED8D)
  %3453 = select <8 x i1> %3452, <8 x double> %3451, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3454 = select <8 x i1> %3445, <8 x double> %3333, <8 x double> %3453
  %3455 = fadd <8 x double> %3336, splat (double 1.000000e+00)
  %3456 = select <8 x i1> %3445, <8 x double> %3336, <8 x double> %3455
  %3457 = xor <8 x i64> %3440, %3337
  %3458 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %3459 = fmul <8 x double> %3458, splat (double 5.000000e-01)
  %3460 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %3461 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %3462 = fneg <8 x double> %3459
  %3463 = icmp eq <8 x i64> %3461, zeroinitializer
  %3464 = select <8 x i1> %3463, <8 x double> %3462, <8 x double> %3459
  %3465 = fadd <8 x double> %3460, %3464
  %3466 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %3467 = fsub <8 x double> %3466, %3465
  %3468 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %3469 = fsub <8 x double> %3468, %3465
  %3470 = fneg <8 x double> %3467
  %3471 = select <8 x i1> %3463, <8 x double> %3470, <8 x double> %3467
  %3472 = fneg <8 x double> %3469
  %3473 = select <8 x i1> %3463, <8 x double> %3472, <8 x double> %3469
  %3474 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3475 = fcmp oeq <8 x double> %3474, zeroinitializer
  %3476 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3477 = fcmp oeq <8 x double> %3476, zeroinitializer
  %3478 = and <8 x i1> %3475, %3477
  %3479 = fcmp olt <8 x double> %3471, splat (double -1.000000e-03)
  %3480 = and <8 x i1> %3478, %3479
  %3481 = fcmp ogt <8 x double> %3473, splat (double 4.000000e-03)
  %3482 = and <8 x i1> %3481, %3480
  %3483 = and <8 x i1> %3312, %3482
  %3484 = fsub <8 x double> %3471, %3473
  %3485 = fdiv <8 x double> %3471, %3484
  %3486 = select <8 x i1> %3483, <8 x i64> %3457, <8 x i64> zeroinitializer
  %3487 = fcmp ogt <8 x double> %3446, %3311
  %3488 = icmp eq <8 x i64> %3486, zeroinitializer
  %3489 = select <8 x i1> %3488, <8 x i1> splat (i1 true), <8 x i1> %3487
  %3490 = select <8 x i1> %3489, <8 x double> %3446, <8 x double> %3311
  store <8 x double> %3490, ptr %143, align 64, !tbaa !26
  %3491 = fcmp ogt <8 x double> %3485, splat (double 5.000000e-02)
  %3492 = select <8 x i1> %3491, <8 x double> %3485, <8 x double> splat (double 5.000000e-02)
  %3493 = fcmp olt <8 x double> %3492, splat (double 0x3FEE666666666666)
  %3494 = select <8 x i1> %3493, <8 x double> %3492, <8 x double> splat (double 0x3FEE666666666666)
  %3495 = fmul <8 x double> %3311, %3494
  %3496 = fcmp ogt <8 x double> %3495, splat (double 0x3EB0C6F7A0B5ED8D)
  %3497 = select <8 x i1> %3496, <8 x double> %3495, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3498 = select <8 x i1> %3488, <8 x double> %3454, <8 x double> %3497
  store <8 x double> %3498, ptr %139, align 64, !tbaa !26
  %3499 = fadd <8 x double> %3456, splat (double 1.000000e+00)
  %3500 = select <8 x i1> %3488, <8 x double> %3456, <8 x double> %3499
  store <8 x double> %3500, ptr %124, align 64, !tbaa !26
  %3501 = xor <8 x i64> %3486, %3457
  %3502 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %3503 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3504 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %3505 = fsub <8 x double> %3503, %3504
  %3506 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %3507 = fcmp une <8 x double> %3506, splat (double 1.000000e+00)
  %3508 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %3509 = fsub <8 x double> %3466, %3508
  %3510 = select <8 x i1> %3507, <8 x double> splat (double -1.000000e+00), <8 x double> %3509
  %3511 = fcmp une <8 x double> %3506, splat (double 2.000000e+00)
  %3512 = fsub <8 x double> %3502, %3508
  %3513 = select <8 x i1> %3511, <8 x double> %3510, <8 x double> %3512
  %3514 = fcmp une <8 x double> %3506, splat (double 3.000000e+00)
  %3515 = fsub <8 x double> %3505, %3508
  %3516 = select <8 x i1> %3514, <8 x double> %3513, <8 x double> %3515
  %3517 = fcmp une <8 x double> %3506, splat (double 4.000000e+00)
  %3518 = fsub <8 x double> %3508, %3505
  %3519 = select <8 x i1> %3517, <8 x double> %3516, <8 x double> %3518
  br i1 %3338, label %3520, label %3552

3520:                                             ; preds = %3429
  %3521 = load ptr, ptr %129, align 8, !tbaa !28
  %3522 = and i64 %3292, 1
  %3523 = icmp eq i64 %3292, 1
  br i1 %3523, label %3542, label %3524

3524:                                             ; preds = %3520
  %3525 = and i64 %3292, 9223372036854775806
  br label %3526

3526:                                             ; preds = %3526, %3524
  %3527 = phi i64 [ 0, %3524 ], [ %3539, %3526 ]
  %3528 = phi <8 x double> [ splat (double 1.000000e+09), %3524 ], [ %3538, %3526 ]
  %3529 = phi i64 [ 0, %3524 ], [ %3540, %3526 ]
  %3530 = getelementptr inbounds nuw %struct.Piece, ptr %3521, i64 %3527, i32 35
  %3531 = load <8 x double>, ptr %3530, align 64, !tbaa !26
  %3532 = fcmp olt <8 x double> %3528, %3531
  %3533 = select <8 x i1> %3532, <8 x double> %3528, <8 x double> %3531
  %3534 = or disjoint i64 %3527, 1
  %3535 = getelementptr inbounds nuw %struct.Piece, ptr %3521, i64 %3534, i32 35
  %3536 = load <8 x double>, ptr %3535, align 64, !tbaa !26
  %3537 = fcmp olt <8 x double> %3533, %3536
  %3538 = select <8 x i1> %3537, <8 x double> %3533, <8 x double> %3536
  %3539 = add nuw nsw i64 %3527, 2
  %3540 = add i64 %3529, 2
  %3541 = icmp eq i64 %3540, %3525
  br i1 %3541, label %3542, label %3526, !llvm.loop !117

3542:                                             ; preds = %3526, %3520
  %3543 = phi <8 x double> [ poison, %3520 ], [ %3538, %3526 ]
  %3544 = phi i64 [ 0, %3520 ], [ %3539, %3526 ]
  %3545 = phi <8 x double> [ splat (double 1.000000e+09), %3520 ], [ %3538, %3526 ]
  %3546 = icmp eq i64 %3522, 0
  br i1 %3546, label %3552, label %3547

3547:                                             ; preds = %3542
  %3548 = getelementptr inbounds nuw %struct.Piece, ptr %3521, i64 %3544, i32 35
  %3549 = load <8 x double>, ptr %3548, align 64, !tbaa !26
  %3550 = fcmp olt <8 x double> %3545, %3549
  %3551 = select <8 x i1> %3550, <8 x double> %3545, <8 x double> %3549
  br label %3552

3552:                                             ; preds = %3547, %3542, %3429
  %3553 = phi <8 x double> [ splat (double 1.000000e+09), %3429 ], [ %3543, %3542 ], [ %3551, %3547 ]
  %3554 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %3553)
  %3555 = insertelement <8 x double> poison, double %3554, i64 0
  %3556 = shufflevector <8 x double> %3555, <8 x double> poison, <8 x i32> zeroinitializer
  %3557 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %3558 = fsub <8 x double> %3557, %3504
  %3559 = fsub <8 x double> %3468, %3508
  %3560 = select <8 x i1> %3507, <8 x double> splat (double -1.000000e+00), <8 x double> %3559
  %3561 = fsub <8 x double> %3556, %3508
  %3562 = select <8 x i1> %3511, <8 x double> %3560, <8 x double> %3561
  %3563 = fsub <8 x double> %3558, %3508
  %3564 = select <8 x i1> %3514, <8 x double> %3562, <8 x double> %3563
  %3565 = fsub <8 x double> %3508, %3558
  %3566 = select <8 x i1> %3517, <8 x double> %3564, <8 x double> %3565
  %3567 = fcmp une <8 x double> %3506, zeroinitializer
  %3568 = fcmp oge <8 x double> %3311, splat (double 5.000000e-02)
  %3569 = and <8 x i1> %3568, %3567
  %3570 = fcmp olt <8 x double> %3519, zeroinitializer
  %3571 = and <8 x i1> %3569, %3570
  %3572 = fsub <8 x double> %3566, %3519
  %3573 = fmul <8 x double> %3572, splat (double 2.000000e-02)
  %3574 = fcmp ogt <8 x double> %3566, %3573
  %3575 = and <8 x i1> %3571, %3574
  %3576 = fsub <8 x double> %3519, %3566
  %3577 = fdiv <8 x double> %3519, %3576
  %3578 = fcmp olt <8 x double> %3577, splat (double 0x3FEE666666666666)
  %3579 = and <8 x i1> %3578, %3575
  %3580 = select <8 x i1> %3579, <8 x i64> %3501, <8 x i64> zeroinitializer
  %3581 = fcmp ogt <8 x double> %3490, %3311
  %3582 = icmp eq <8 x i64> %3580, zeroinitializer
  %3583 = select <8 x i1> %3582, <8 x i1> splat (i1 true), <8 x i1> %3581
  %3584 = select <8 x i1> %3583, <8 x double> %3490, <8 x double> %3311
  store <8 x double> %3584, ptr %143, align 64, !tbaa !26
  %3585 = fcmp ogt <8 x double> %3577, splat (double 5.000000e-02)
  %3586 = select <8 x i1> %3585, <8 x double> %3577, <8 x double> splat (double 5.000000e-02)
  %3587 = fcmp olt <8 x double> %3586, splat (double 0x3FEE666666666666)
  %3588 = select <8 x i1> %3587, <8 x double> %3586, <8 x double> splat (double 0x3FEE666666666666)
  %3589 = fmul <8 x double> %3311, %3588
  %3590 = fcmp ogt <8 x double> %3589, splat (double 0x3EB0C6F7A0B5ED8D)
  %3591 = select <8 x i1> %3590, <8 x double> %3589, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3592 = select <8 x i1> %3582, <8 x double> %3498, <8 x double> %3591
  store <8 x double> %3592, ptr %139, align 64, !tbaa !26
  %3593 = fadd <8 x double> %3500, splat (double 1.000000e+00)
  %3594 = select <8 x i1> %3582, <8 x double> %3500, <8 x double> %3593
  store <8 x double> %3594, ptr %124, align 64, !tbaa !26
  %3595 = xor <8 x i64> %3580, %3501
  %3596 = or <8 x i64> %3595, %3298
  %3597 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3596)
  %3598 = icmp eq i64 %3597, 0
  br i1 %3598, label %512, label %3655

3599:                                             ; preds = %3289, %3647
  %3600 = phi i64 [ 0, %3289 ], [ %3652, %3647 ]
  %3601 = load ptr, ptr %129, align 8, !tbaa !28
  %3602 = getelementptr inbounds nuw %struct.Piece, ptr %3601, i64 %3600
  %3603 = getelementptr inbounds nuw i8, ptr %3602, i64 7560
  %3604 = load ptr, ptr %3603, align 8, !tbaa !56
  %3605 = load <8 x double>, ptr %3604, align 64, !tbaa !26
  %3606 = getelementptr inbounds nuw i8, ptr %3602, i64 1344
  %3607 = load <8 x double>, ptr %3606, align 64, !tbaa !26
  %3608 = getelementptr inbounds nuw i8, ptr %3604, i64 64
  %3609 = load <8 x double>, ptr %3608, align 64, !tbaa !26
  %3610 = fsub <8 x double> %3609, %3605
  %3611 = fneg <8 x double> %3607
  %3612 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3611, <8 x double> %3610, <8 x double> %3605)
  %3613 = getelementptr inbounds nuw i8, ptr %3602, i64 7552
  %3614 = load i64, ptr %3613, align 64, !tbaa !31
  %3615 = icmp eq i64 %3614, 0
  br i1 %3615, label %3647, label %3616

3616:                                             ; preds = %3599
  %3617 = getelementptr <8 x double>, ptr %3604, i64 %3614
  %3618 = getelementptr i8, ptr %3617, i64 -64
  %3619 = load <8 x double>, ptr %3618, align 64, !tbaa !26
  %3620 = load <8 x double>, ptr %3617, align 64, !tbaa !26
  %3621 = getelementptr inbounds nuw i8, ptr %3602, i64 2880
  %3622 = load <8 x double>, ptr %3621, align 64, !tbaa !26
  %3623 = getelementptr inbounds nuw i8, ptr %3602, i64 2944
  %3624 = load <8 x double>, ptr %3623, align 64, !tbaa !26
  %3625 = getelementptr inbounds nuw i8, ptr %3602, i64 64
  %3626 = load <8 x double>, ptr %3625, align 64, !tbaa !26
  %3627 = fsub <8 x double> %3624, %3626
  %3628 = fmul <8 x double> %3622, %3627
  %3629 = getelementptr inbounds nuw i8, ptr %3602, i64 576
  %3630 = load <8 x double>, ptr %3629, align 64, !tbaa !26
  %3631 = getelementptr inbounds nuw i8, ptr %3602, i64 2816
  %3632 = load <8 x double>, ptr %3631, align 64, !tbaa !26
  %3633 = fdiv <8 x double> %3630, %3632
  %3634 = getelementptr inbounds nuw i8, ptr %3602, i64 192
  %3635 = load <8 x double>, ptr %3634, align 64, !tbaa !26
  %3636 = getelementptr inbounds nuw i8, ptr %3602, i64 256
  %3637 = load <8 x double>, ptr %3636, align 64, !tbaa !26
  %3638 = getelementptr inbounds nuw i8, ptr %3602, i64 320
  %3639 = load <8 x double>, ptr %3638, align 64, !tbaa !26
  %3640 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3620, <8 x double> %3639, <8 x double> %3637)
  %3641 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3620, <8 x double> %3640, <8 x double> %3635)
  %3642 = fdiv <8 x double> %3641, %3628
  %3643 = fmul <8 x double> %3620, %3642
  %3644 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3633, <8 x double> %3619, <8 x double> %3643)
  %3645 = fadd <8 x double> %3633, %3642
  %3646 = fdiv <8 x double> %3644, %3645
  br label %3647

3647:                                             ; preds = %3599, %3616
  %3648 = phi <8 x double> [ %3646, %3616 ], [ %3612, %3599 ]
  %3649 = getelementptr inbounds nuw i8, ptr %3602, i64 7232
  %3650 = load <8 x double>, ptr %3649, align 64, !tbaa !26
  %3651 = select <8 x i1> %3290, <8 x double> %3650, <8 x double> %3648
  store <8 x double> %3651, ptr %3649, align 64, !tbaa !26
  %3652 = add nuw nsw i64 %3600, 1
  %3653 = load i64, ptr %144, align 8, !tbaa !20
  %3654 = icmp slt i64 %3652, %3653
  br i1 %3654, label %3599, label %3291, !llvm.loop !118

3655:                                             ; preds = %3552
  %3656 = icmp eq <8 x i64> %3596, zeroinitializer
  %3657 = select <8 x i1> %3656, <8 x double> %3305, <8 x double> %3304
  store <8 x double> %3657, ptr %206, align 64, !tbaa !26
  %3658 = load <8 x double>, ptr %153, align 64, !tbaa !26
  %3659 = select <8 x i1> %3656, <8 x double> %3658, <8 x double> %3466
  store <8 x double> %3659, ptr %153, align 64, !tbaa !26
  %3660 = select <8 x i1> %3656, <8 x double> %3466, <8 x double> %3468
  store <8 x double> %3660, ptr %152, align 64, !tbaa !26
  %3661 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %3662 = select <8 x i1> %3656, <8 x double> %3661, <8 x double> %3503
  store <8 x double> %3662, ptr %252, align 64, !tbaa !26
  %3663 = select <8 x i1> %3656, <8 x double> %3503, <8 x double> %3557
  store <8 x double> %3663, ptr %253, align 64, !tbaa !26
  %3664 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %3665 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %3666 = select <8 x i1> %3656, <8 x double> %3665, <8 x double> %3664
  store <8 x double> %3666, ptr %254, align 64, !tbaa !26
  %3667 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %3668 = select <8 x i1> %3656, <8 x double> %3664, <8 x double> %3667
  store <8 x double> %3668, ptr %255, align 64, !tbaa !26
  %3669 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %3670 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %3671 = select <8 x i1> %3656, <8 x double> %3670, <8 x double> %3669
  store <8 x double> %3671, ptr %257, align 64, !tbaa !26
  %3672 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %3673 = select <8 x i1> %3656, <8 x double> %3669, <8 x double> %3672
  store <8 x double> %3673, ptr %258, align 64, !tbaa !26
  %3674 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %3675 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %3676 = select <8 x i1> %3656, <8 x double> %3675, <8 x double> %3674
  store <8 x double> %3676, ptr %260, align 64, !tbaa !26
  %3677 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %3678 = select <8 x i1> %3656, <8 x double> %3674, <8 x double> %3677
  store <8 x double> %3678, ptr %261, align 64, !tbaa !26
  %3679 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %3680 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %3681 = select <8 x i1> %3656, <8 x double> %3680, <8 x double> %3679
  store <8 x double> %3681, ptr %263, align 64, !tbaa !26
  %3682 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %3683 = select <8 x i1> %3656, <8 x double> %3679, <8 x double> %3682
  store <8 x double> %3683, ptr %264, align 64, !tbaa !26
  %3684 = xor <8 x i64> %3596, splat (i64 -1)
  br i1 %3338, label %3685, label %4056

3685:                                             ; preds = %3655, %4021
  %3686 = phi i64 [ %4033, %4021 ], [ 0, %3655 ]
  %3687 = load ptr, ptr %129, align 8, !tbaa !28
  %3688 = getelementptr inbounds nuw %struct.Piece, ptr %3687, i64 %3686
  %3689 = getelementptr inbounds nuw i8, ptr %3688, i64 1664
  %3690 = load <8 x double>, ptr %3689, align 64, !tbaa !26
  %3691 = fcmp ogt <8 x double> %3690, zeroinitializer
  %3692 = bitcast <8 x i1> %3691 to i8
  %3693 = icmp eq i8 %3692, 0
  %3694 = load i64, ptr %119, align 16, !tbaa !21
  br i1 %3693, label %3952, label %3695

3695:                                             ; preds = %3685
  %3696 = add i64 %3694, -1
  %3697 = getelementptr inbounds nuw i8, ptr %3688, i64 4416
  %3698 = load <8 x double>, ptr %3697, align 64, !tbaa !26
  %3699 = getelementptr inbounds nuw i8, ptr %3688, i64 3648
  %3700 = load <8 x double>, ptr %3699, align 64, !tbaa !26
  %3701 = getelementptr inbounds nuw i8, ptr %3688, i64 7552
  %3702 = load i64, ptr %3701, align 64, !tbaa !31
  %3703 = icmp sgt i64 %3694, %3702
  br i1 %3703, label %3712, label %3704

3704:                                             ; preds = %3695
  %3705 = getelementptr inbounds nuw i8, ptr %3688, i64 7648
  %3706 = load ptr, ptr %3705, align 32, !tbaa !70
  %3707 = getelementptr inbounds <8 x double>, ptr %3706, i64 %3696
  %3708 = load <8 x double>, ptr %3707, align 64, !tbaa !26
  %3709 = getelementptr inbounds nuw i8, ptr %3688, i64 1536
  %3710 = load <8 x double>, ptr %3709, align 64, !tbaa !26
  %3711 = fmul <8 x double> %3708, %3710
  br label %3721

3712:                                             ; preds = %3695
  %3713 = getelementptr inbounds nuw i8, ptr %3688, i64 1536
  %3714 = load <8 x double>, ptr %3713, align 64, !tbaa !26
  %3715 = getelementptr inbounds nuw i8, ptr %3688, i64 7648
  %3716 = load ptr, ptr %3715, align 32, !tbaa !70
  %3717 = getelementptr inbounds <8 x double>, ptr %3716, i64 %3696
  %3718 = load <8 x double>, ptr %3717, align 64, !tbaa !26
  %3719 = fsub <8 x double> %3698, %3714
  %3720 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3718, <8 x double> %3719, <8 x double> %3714)
  br label %3721

3721:                                             ; preds = %3712, %3704
  %3722 = phi <8 x double> [ %3710, %3704 ], [ %3714, %3712 ]
  %3723 = phi <8 x double> [ %3711, %3704 ], [ %3720, %3712 ]
  %3724 = getelementptr inbounds nuw i8, ptr %3688, i64 3008
  %3725 = load <8 x double>, ptr %3724, align 64, !tbaa !26
  %3726 = fcmp ole <8 x double> %3723, %3725
  %3727 = getelementptr inbounds nuw i8, ptr %3688, i64 7296
  %3728 = load <8 x double>, ptr %3727, align 64, !tbaa !26
  %3729 = fcmp oeq <8 x double> %3728, zeroinitializer
  %3730 = select <8 x i1> %3729, <8 x i1> %3726, <8 x i1> zeroinitializer
  %3731 = select <8 x i1> %3730, <8 x i64> %3596, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %3732 = xor <8 x i64> %3731, %3596
  store <8 x i64> %3732, ptr %12, align 64, !tbaa !26
  %3733 = fsub <8 x double> %3698, %3700
  %3734 = getelementptr inbounds nuw i8, ptr %3688, i64 1536
  %3735 = fsub <8 x double> %3700, %3722
  %3736 = fdiv <8 x double> %3733, %3735
  %3737 = getelementptr inbounds nuw i8, ptr %3688, i64 7592
  %3738 = load ptr, ptr %3737, align 8, !tbaa !63
  %3739 = getelementptr inbounds <8 x double>, ptr %3738, i64 %3702
  %3740 = load <8 x double>, ptr %3739, align 64, !tbaa !26
  %3741 = getelementptr inbounds nuw i8, ptr %3688, i64 7600
  %3742 = load ptr, ptr %3741, align 16, !tbaa !45
  %3743 = getelementptr inbounds <8 x double>, ptr %3742, i64 %3702
  %3744 = load <8 x double>, ptr %3743, align 64, !tbaa !26
  %3745 = icmp eq <8 x i64> %3731, zeroinitializer
  %3746 = select <8 x i1> %3745, <8 x double> %3744, <8 x double> %3740
  store <8 x double> %3746, ptr %3743, align 64, !tbaa !26
  %3747 = load i64, ptr %3701, align 64, !tbaa !31
  %3748 = add nsw i64 %3747, 1
  %3749 = icmp slt i64 %3748, %3696
  br i1 %3749, label %3750, label %3754

3750:                                             ; preds = %3721
  %3751 = getelementptr inbounds nuw i8, ptr %3688, i64 7664
  br label %3794

3752:                                             ; preds = %3794
  %3753 = load i64, ptr %3701, align 64, !tbaa !31
  br label %3754

3754:                                             ; preds = %3752, %3721
  %3755 = phi i64 [ %3747, %3721 ], [ %3753, %3752 ]
  %3756 = phi <8 x double> [ %3740, %3721 ], [ %3799, %3752 ]
  %3757 = icmp sgt i64 %3694, %3755
  br i1 %3757, label %3765, label %3758

3758:                                             ; preds = %3754
  %3759 = getelementptr inbounds nuw i8, ptr %3688, i64 7648
  %3760 = load ptr, ptr %3759, align 32, !tbaa !70
  %3761 = getelementptr inbounds <8 x double>, ptr %3760, i64 %3696
  %3762 = load <8 x double>, ptr %3761, align 64, !tbaa !26
  %3763 = load <8 x double>, ptr %3734, align 64, !tbaa !26
  %3764 = fmul <8 x double> %3762, %3763
  br label %3773

3765:                                             ; preds = %3754
  %3766 = load <8 x double>, ptr %3734, align 64, !tbaa !26
  %3767 = getelementptr inbounds nuw i8, ptr %3688, i64 7648
  %3768 = load ptr, ptr %3767, align 32, !tbaa !70
  %3769 = getelementptr inbounds <8 x double>, ptr %3768, i64 %3696
  %3770 = load <8 x double>, ptr %3769, align 64, !tbaa !26
  %3771 = fsub <8 x double> %3700, %3766
  %3772 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3770, <8 x double> %3771, <8 x double> %3766)
  br label %3773

3773:                                             ; preds = %3765, %3758
  %3774 = phi <8 x double> [ %3764, %3758 ], [ %3772, %3765 ]
  %3775 = load ptr, ptr %3737, align 8, !tbaa !63
  %3776 = getelementptr inbounds <8 x double>, ptr %3775, i64 %3696
  %3777 = load <8 x double>, ptr %3776, align 64, !tbaa !26
  %3778 = load ptr, ptr %3741, align 16, !tbaa !45
  %3779 = getelementptr inbounds <8 x double>, ptr %3778, i64 %3696
  %3780 = fsub <8 x double> %3756, %3777
  %3781 = fsub <8 x double> %3723, %3774
  %3782 = load <8 x double>, ptr %3724, align 64, !tbaa !26
  %3783 = fsub <8 x double> %3782, %3774
  %3784 = fdiv <8 x double> %3781, %3783
  %3785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3780, <8 x double> %3784, <8 x double> %3777)
  %3786 = load <8 x double>, ptr %3779, align 64, !tbaa !26
  %3787 = select <8 x i1> %3745, <8 x double> %3786, <8 x double> %3785
  store <8 x double> %3787, ptr %3779, align 64, !tbaa !26
  %3788 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3732)
  %3789 = icmp eq i64 %3788, 0
  br i1 %3789, label %3950, label %3790

3790:                                             ; preds = %3773
  %3791 = getelementptr inbounds nuw i8, ptr %3688, i64 7648
  %3792 = getelementptr inbounds nuw i8, ptr %3688, i64 3136
  %3793 = getelementptr inbounds nuw i8, ptr %3688, i64 832
  br label %3812

3794:                                             ; preds = %3750, %3794
  %3795 = phi i64 [ %3748, %3750 ], [ %3810, %3794 ]
  %3796 = phi <8 x double> [ %3740, %3750 ], [ %3799, %3794 ]
  %3797 = load ptr, ptr %3737, align 8, !tbaa !63
  %3798 = getelementptr inbounds <8 x double>, ptr %3797, i64 %3795
  %3799 = load <8 x double>, ptr %3798, align 64, !tbaa !26
  %3800 = load ptr, ptr %3741, align 16, !tbaa !45
  %3801 = getelementptr inbounds <8 x double>, ptr %3800, i64 %3795
  %3802 = fsub <8 x double> %3796, %3799
  %3803 = load ptr, ptr %3751, align 16, !tbaa !119
  %3804 = getelementptr inbounds <8 x double>, ptr %3803, i64 %3795
  %3805 = load <8 x double>, ptr %3804, align 64, !tbaa !26
  %3806 = fmul <8 x double> %3736, %3805
  %3807 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3802, <8 x double> %3806, <8 x double> %3799)
  %3808 = load <8 x double>, ptr %3801, align 64, !tbaa !26
  %3809 = select <8 x i1> %3745, <8 x double> %3808, <8 x double> %3807
  store <8 x double> %3809, ptr %3801, align 64, !tbaa !26
  %3810 = add nsw i64 %3795, 1
  %3811 = icmp eq i64 %3810, %3696
  br i1 %3811, label %3752, label %3794, !llvm.loop !120

3812:                                             ; preds = %3790, %3947
  %3813 = phi i64 [ 0, %3790 ], [ %3948, %3947 ]
  %3814 = getelementptr inbounds nuw i64, ptr %12, i64 %3813
  %3815 = load i64, ptr %3814, align 8, !tbaa !30
  %3816 = icmp eq i64 %3815, 0
  br i1 %3816, label %3947, label %3817

3817:                                             ; preds = %3812
  %3818 = load i64, ptr %119, align 16, !tbaa !21
  %3819 = load i64, ptr %3701, align 64, !tbaa !31
  %3820 = getelementptr inbounds nuw double, ptr %3734, i64 %3813
  %3821 = load double, ptr %3820, align 8, !tbaa !40
  %3822 = getelementptr inbounds nuw double, ptr %3724, i64 %3813
  %3823 = load double, ptr %3822, align 8, !tbaa !40
  %3824 = add nsw i64 %3818, -1
  %3825 = icmp sgt i64 %3818, %3819
  br i1 %3825, label %3826, label %3947

3826:                                             ; preds = %3817
  %3827 = getelementptr inbounds nuw double, ptr %3699, i64 %3813
  %3828 = load double, ptr %3827, align 8, !tbaa !40
  %3829 = getelementptr inbounds nuw double, ptr %3697, i64 %3813
  %3830 = load double, ptr %3829, align 8, !tbaa !40
  %3831 = load ptr, ptr %3791, align 32
  %3832 = getelementptr i8, ptr %3831, i64 64
  %3833 = getelementptr double, ptr %3832, i64 %3813
  %3834 = fsub double %3828, %3821
  %3835 = getelementptr double, ptr %3831, i64 %3813
  %3836 = fsub double %3830, %3821
  %3837 = load ptr, ptr %3737, align 8, !tbaa !63
  %3838 = getelementptr double, ptr %3837, i64 %3813
  %3839 = load ptr, ptr %3741, align 16, !tbaa !45
  %3840 = getelementptr double, ptr %3839, i64 %3813
  %3841 = getelementptr <8 x double>, ptr %3835, i64 %3824
  br label %3869

3842:                                             ; preds = %3915
  %3843 = getelementptr inbounds nuw double, ptr %3727, i64 %3813
  %3844 = load double, ptr %3843, align 8, !tbaa !40
  %3845 = fcmp ogt double %3844, 0.000000e+00
  %3846 = fcmp ogt double %3926, 0.000000e+00
  %3847 = select i1 %3845, i1 %3846, i1 false
  br i1 %3847, label %3848, label %3947

3848:                                             ; preds = %3842
  %3849 = getelementptr inbounds nuw double, ptr %3792, i64 %3813
  %3850 = getelementptr inbounds nuw double, ptr %3793, i64 %3813
  %3851 = sub i64 %3818, %3819
  %3852 = add i64 %3819, 1
  %3853 = and i64 %3851, 1
  %3854 = icmp eq i64 %3853, 0
  br i1 %3854, label %3864, label %3855

3855:                                             ; preds = %3848
  %3856 = load double, ptr %3849, align 8, !tbaa !40
  %3857 = load double, ptr %3850, align 8, !tbaa !40
  %3858 = fmul double %3926, %3857
  %3859 = fdiv double %3856, %3858
  %3860 = getelementptr <8 x double>, ptr %3840, i64 %3819
  %3861 = load double, ptr %3860, align 8, !tbaa !40
  %3862 = fmul double %3861, %3859
  store double %3862, ptr %3860, align 8, !tbaa !40
  %3863 = add nsw i64 %3819, 1
  br label %3864

3864:                                             ; preds = %3855, %3848
  %3865 = phi i64 [ %3819, %3848 ], [ %3863, %3855 ]
  %3866 = icmp eq i64 %3818, %3852
  br i1 %3866, label %3947, label %3867

3867:                                             ; preds = %3864
  %3868 = getelementptr i8, ptr %3840, i64 64
  br label %3929

3869:                                             ; preds = %3915, %3826
  %3870 = phi double [ 0.000000e+00, %3826 ], [ %3926, %3915 ]
  %3871 = phi i64 [ %3824, %3826 ], [ %3927, %3915 ]
  %3872 = icmp eq i64 %3871, %3824
  br i1 %3872, label %3873, label %3876

3873:                                             ; preds = %3869
  %3874 = load double, ptr %3841, align 8, !tbaa !40
  %3875 = tail call noundef double @llvm.fmuladd.f64(double %3874, double %3834, double %3821)
  br label %3887

3876:                                             ; preds = %3869
  %3877 = getelementptr <8 x double>, ptr %3833, i64 %3871
  %3878 = load double, ptr %3877, align 8, !tbaa !40
  %3879 = tail call noundef double @llvm.fmuladd.f64(double %3878, double %3834, double %3821)
  %3880 = getelementptr <8 x double>, ptr %3835, i64 %3871
  %3881 = load double, ptr %3880, align 8, !tbaa !40
  %3882 = tail call noundef double @llvm.fmuladd.f64(double %3881, double %3834, double %3821)
  %3883 = tail call noundef double @llvm.fmuladd.f64(double %3878, double %3836, double %3821)
  %3884 = fcmp ult double %3883, %3879
  br i1 %3884, label %3885, label %3887

3885:                                             ; preds = %3876
  %3886 = add nsw i64 %3871, 1
  br label %3887

3887:                                             ; preds = %3885, %3876, %3873
  %3888 = phi double [ %3882, %3885 ], [ %3882, %3876 ], [ %3875, %3873 ]
  %3889 = phi double [ %3879, %3885 ], [ %3879, %3876 ], [ %3823, %3873 ]
  %3890 = phi i64 [ %3886, %3885 ], [ %3871, %3876 ], [ %3824, %3873 ]
  %3891 = icmp sgt i64 %3890, %3819
  br i1 %3891, label %3892, label %3915

3892:                                             ; preds = %3887
  %3893 = load ptr, ptr %3737, align 8
  %3894 = getelementptr double, ptr %3893, i64 %3813
  br label %3895

3895:                                             ; preds = %3910, %3892
  %3896 = phi i64 [ %3890, %3892 ], [ %3913, %3910 ]
  %3897 = phi double [ 0.000000e+00, %3892 ], [ %3912, %3910 ]
  %3898 = phi double [ %3889, %3892 ], [ %3911, %3910 ]
  %3899 = getelementptr <8 x double>, ptr %3835, i64 %3896
  %3900 = load double, ptr %3899, align 8, !tbaa !40
  %3901 = tail call noundef double @llvm.fmuladd.f64(double %3900, double %3836, double %3821)
  %3902 = fcmp ogt double %3901, %3888
  br i1 %3902, label %3903, label %3915

3903:                                             ; preds = %3895
  %3904 = fcmp ogt double %3898, %3901
  br i1 %3904, label %3905, label %3910

3905:                                             ; preds = %3903
  %3906 = getelementptr <8 x double>, ptr %3894, i64 %3896
  %3907 = load double, ptr %3906, align 8, !tbaa !40
  %3908 = fsub double %3898, %3901
  %3909 = tail call double @llvm.fmuladd.f64(double %3907, double %3908, double %3897)
  br label %3910

3910:                                             ; preds = %3905, %3903
  %3911 = phi double [ %3901, %3905 ], [ %3898, %3903 ]
  %3912 = phi double [ %3909, %3905 ], [ %3897, %3903 ]
  %3913 = add nsw i64 %3896, -1
  %3914 = icmp sgt i64 %3913, %3819
  br i1 %3914, label %3895, label %3915, !llvm.loop !121

3915:                                             ; preds = %3910, %3895, %3887
  %3916 = phi double [ %3889, %3887 ], [ %3898, %3895 ], [ %3911, %3910 ]
  %3917 = phi double [ 0.000000e+00, %3887 ], [ %3897, %3895 ], [ %3912, %3910 ]
  %3918 = phi i64 [ %3890, %3887 ], [ %3896, %3895 ], [ %3819, %3910 ]
  %3919 = getelementptr <8 x double>, ptr %3838, i64 %3918
  %3920 = load double, ptr %3919, align 8, !tbaa !40
  %3921 = fsub double %3916, %3888
  %3922 = tail call double @llvm.fmuladd.f64(double %3920, double %3921, double %3917)
  %3923 = fsub double %3889, %3888
  %3924 = fdiv double %3922, %3923
  %3925 = getelementptr <8 x double>, ptr %3840, i64 %3871
  store double %3924, ptr %3925, align 8, !tbaa !40
  %3926 = fadd double %3870, %3922
  %3927 = add nsw i64 %3871, -1
  %3928 = icmp sgt i64 %3871, %3819
  br i1 %3928, label %3869, label %3842, !llvm.loop !122

3929:                                             ; preds = %3929, %3867
  %3930 = phi i64 [ %3865, %3867 ], [ %3945, %3929 ]
  %3931 = load double, ptr %3849, align 8, !tbaa !40
  %3932 = load double, ptr %3850, align 8, !tbaa !40
  %3933 = fmul double %3926, %3932
  %3934 = fdiv double %3931, %3933
  %3935 = getelementptr <8 x double>, ptr %3840, i64 %3930
  %3936 = load double, ptr %3935, align 8, !tbaa !40
  %3937 = fmul double %3936, %3934
  store double %3937, ptr %3935, align 8, !tbaa !40
  %3938 = load double, ptr %3849, align 8, !tbaa !40
  %3939 = load double, ptr %3850, align 8, !tbaa !40
  %3940 = fmul double %3926, %3939
  %3941 = fdiv double %3938, %3940
  %3942 = getelementptr <8 x double>, ptr %3868, i64 %3930
  %3943 = load double, ptr %3942, align 8, !tbaa !40
  %3944 = fmul double %3943, %3941
  store double %3944, ptr %3942, align 8, !tbaa !40
  %3945 = add nsw i64 %3930, 2
  %3946 = icmp eq i64 %3945, %3818
  br i1 %3946, label %3947, label %3929, !llvm.loop !123

3947:                                             ; preds = %3864, %3929, %3842, %3817, %3812
  %3948 = add nuw nsw i64 %3813, 1
  %3949 = icmp eq i64 %3948, 8
  br i1 %3949, label %3950, label %3812, !llvm.loop !124

3950:                                             ; preds = %3947, %3773
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  %3951 = load i64, ptr %119, align 16, !tbaa !21
  br label %3952

3952:                                             ; preds = %3685, %3950
  %3953 = phi i64 [ %3694, %3685 ], [ %3951, %3950 ]
  %3954 = getelementptr inbounds nuw i8, ptr %3688, i64 7560
  %3955 = load ptr, ptr %3954, align 8, !tbaa !56
  %3956 = getelementptr inbounds nuw i8, ptr %3688, i64 7568
  %3957 = load ptr, ptr %3956, align 16, !tbaa !44
  %3958 = getelementptr inbounds nuw i8, ptr %3688, i64 7576
  %3959 = load ptr, ptr %3958, align 8, !tbaa !55
  %3960 = icmp sgt i64 %3953, 0
  br i1 %3960, label %3971, label %3961

3961:                                             ; preds = %3971, %3952
  %3962 = load i64, ptr %120, align 8, !tbaa !22
  %3963 = icmp sgt i64 %3962, 0
  br i1 %3963, label %3964, label %3984

3964:                                             ; preds = %3961
  %3965 = getelementptr inbounds nuw i8, ptr %3688, i64 7744
  %3966 = getelementptr inbounds nuw i8, ptr %3688, i64 7736
  %3967 = getelementptr inbounds nuw i8, ptr %3688, i64 7728
  %3968 = getelementptr inbounds nuw i8, ptr %3688, i64 7696
  %3969 = getelementptr inbounds nuw i8, ptr %3688, i64 7688
  %3970 = getelementptr inbounds nuw i8, ptr %3688, i64 7680
  br label %3988

3971:                                             ; preds = %3952, %3971
  %3972 = phi i64 [ %3981, %3971 ], [ 0, %3952 ]
  %3973 = getelementptr inbounds nuw <8 x double>, ptr %3957, i64 %3972
  %3974 = load <8 x double>, ptr %3973, align 64, !tbaa !26
  %3975 = getelementptr inbounds nuw <8 x double>, ptr %3959, i64 %3972
  %3976 = load <8 x double>, ptr %3975, align 64, !tbaa !26
  %3977 = select <8 x i1> %3656, <8 x double> %3976, <8 x double> %3974
  store <8 x double> %3977, ptr %3975, align 64, !tbaa !26
  %3978 = getelementptr inbounds nuw <8 x double>, ptr %3955, i64 %3972
  %3979 = load <8 x double>, ptr %3978, align 64, !tbaa !26
  %3980 = select <8 x i1> %3656, <8 x double> %3974, <8 x double> %3979
  store <8 x double> %3980, ptr %3973, align 64, !tbaa !26
  %3981 = add nuw nsw i64 %3972, 1
  %3982 = load i64, ptr %119, align 16, !tbaa !21
  %3983 = icmp slt i64 %3981, %3982
  br i1 %3983, label %3971, label %3961, !llvm.loop !125

3984:                                             ; preds = %3988, %3961
  %3985 = getelementptr inbounds nuw i8, ptr %3688, i64 4480
  %3986 = getelementptr inbounds nuw i8, ptr %3688, i64 3712
  %3987 = getelementptr inbounds nuw i8, ptr %3688, i64 2944
  br label %4036

3988:                                             ; preds = %3964, %3988
  %3989 = phi i64 [ 0, %3964 ], [ %4018, %3988 ]
  %3990 = load ptr, ptr %3965, align 64, !tbaa !58
  %3991 = getelementptr inbounds nuw <8 x double>, ptr %3990, i64 %3989
  %3992 = load ptr, ptr %3966, align 8, !tbaa !47
  %3993 = getelementptr inbounds nuw <8 x double>, ptr %3992, i64 %3989
  %3994 = load <8 x double>, ptr %3993, align 64, !tbaa !26
  %3995 = load <8 x double>, ptr %3991, align 64, !tbaa !26
  %3996 = select <8 x i1> %3656, <8 x double> %3995, <8 x double> %3994
  store <8 x double> %3996, ptr %3991, align 64, !tbaa !26
  %3997 = load ptr, ptr %3966, align 8, !tbaa !47
  %3998 = getelementptr inbounds nuw <8 x double>, ptr %3997, i64 %3989
  %3999 = load ptr, ptr %3967, align 16, !tbaa !78
  %4000 = getelementptr inbounds nuw <8 x double>, ptr %3999, i64 %3989
  %4001 = load <8 x double>, ptr %4000, align 64, !tbaa !26
  %4002 = load <8 x double>, ptr %3998, align 64, !tbaa !26
  %4003 = select <8 x i1> %3656, <8 x double> %4002, <8 x double> %4001
  store <8 x double> %4003, ptr %3998, align 64, !tbaa !26
  %4004 = load ptr, ptr %3968, align 16, !tbaa !60
  %4005 = getelementptr inbounds nuw <8 x double>, ptr %4004, i64 %3989
  %4006 = load ptr, ptr %3969, align 8, !tbaa !48
  %4007 = getelementptr inbounds nuw <8 x double>, ptr %4006, i64 %3989
  %4008 = load <8 x double>, ptr %4007, align 64, !tbaa !26
  %4009 = load <8 x double>, ptr %4005, align 64, !tbaa !26
  %4010 = select <8 x i1> %3656, <8 x double> %4009, <8 x double> %4008
  store <8 x double> %4010, ptr %4005, align 64, !tbaa !26
  %4011 = load ptr, ptr %3969, align 8, !tbaa !48
  %4012 = getelementptr inbounds nuw <8 x double>, ptr %4011, i64 %3989
  %4013 = load ptr, ptr %3970, align 64, !tbaa !109
  %4014 = getelementptr inbounds nuw <8 x double>, ptr %4013, i64 %3989
  %4015 = load <8 x double>, ptr %4014, align 64, !tbaa !26
  %4016 = load <8 x double>, ptr %4012, align 64, !tbaa !26
  %4017 = select <8 x i1> %3656, <8 x double> %4016, <8 x double> %4015
  store <8 x double> %4017, ptr %4012, align 64, !tbaa !26
  %4018 = add nuw nsw i64 %3989, 1
  %4019 = load i64, ptr %120, align 8, !tbaa !22
  %4020 = icmp slt i64 %4018, %4019
  br i1 %4020, label %3988, label %3984, !llvm.loop !126

4021:                                             ; preds = %4036
  %4022 = getelementptr inbounds nuw i8, ptr %3688, i64 7424
  %4023 = getelementptr inbounds nuw i8, ptr %3688, i64 5696
  %4024 = load <8 x double>, ptr %4023, align 64, !tbaa !26
  %4025 = fcmp ogt <8 x double> %4024, zeroinitializer
  %4026 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %4027 = fcmp une <8 x double> %4026, splat (double 2.000000e+00)
  %4028 = and <8 x i1> %4025, %4027
  %4029 = select <8 x i1> %4028, <8 x i64> %3596, <8 x i64> zeroinitializer
  %4030 = load <8 x i64>, ptr %4022, align 64, !tbaa !26
  %4031 = and <8 x i64> %4030, %3684
  %4032 = or <8 x i64> %4029, %4031
  store <8 x i64> %4032, ptr %4022, align 64, !tbaa !26
  %4033 = add nuw nsw i64 %3686, 1
  %4034 = load i64, ptr %144, align 8, !tbaa !20
  %4035 = icmp slt i64 %4033, %4034
  br i1 %4035, label %3685, label %4048, !llvm.loop !127

4036:                                             ; preds = %3984, %4036
  %4037 = phi i64 [ 0, %3984 ], [ %4046, %4036 ]
  %4038 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3985, i64 0, i64 %4037
  %4039 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3986, i64 0, i64 %4037
  %4040 = load <8 x double>, ptr %4039, align 64, !tbaa !26
  %4041 = load <8 x double>, ptr %4038, align 64, !tbaa !26
  %4042 = select <8 x i1> %3656, <8 x double> %4041, <8 x double> %4040
  store <8 x double> %4042, ptr %4038, align 64, !tbaa !26
  %4043 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3987, i64 0, i64 %4037
  %4044 = load <8 x double>, ptr %4043, align 64, !tbaa !26
  %4045 = select <8 x i1> %3656, <8 x double> %4040, <8 x double> %4044
  store <8 x double> %4045, ptr %4039, align 64, !tbaa !26
  %4046 = add nuw nsw i64 %4037, 1
  %4047 = icmp eq i64 %4046, 12
  br i1 %4047, label %4021, label %4036, !llvm.loop !128

4048:                                             ; preds = %4021
  %4049 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4050 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %4051 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %4052 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %4053 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %4054 = fdiv <8 x double> %4051, %3307
  %4055 = icmp sgt i64 %4034, 0
  br label %4056

4056:                                             ; preds = %3655, %4048
  %4057 = phi <8 x double> [ %4054, %4048 ], [ %3317, %3655 ]
  %4058 = phi i1 [ %4055, %4048 ], [ false, %3655 ]
  %4059 = phi <8 x double> [ %4053, %4048 ], [ %3296, %3655 ]
  %4060 = phi <8 x double> [ %4052, %4048 ], [ %3584, %3655 ]
  %4061 = phi <8 x double> [ %4050, %4048 ], [ %3313, %3655 ]
  %4062 = phi <8 x double> [ %4049, %4048 ], [ %3311, %3655 ]
  %4063 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4064 = fadd <8 x double> %4063, %4062
  %4065 = select <8 x i1> %3656, <8 x double> %4063, <8 x double> %4064
  store <8 x double> %4065, ptr %136, align 64, !tbaa !26
  %4066 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4067 = select <8 x i1> %3656, <8 x double> %4066, <8 x double> %4062
  store <8 x double> %4067, ptr %145, align 64, !tbaa !26
  %4068 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4069 = fadd <8 x double> %4068, splat (double 1.000000e+00)
  %4070 = select <8 x i1> %3656, <8 x double> %4068, <8 x double> %4069
  store <8 x double> %4070, ptr %123, align 64, !tbaa !26
  %4071 = load <8 x double>, ptr %125, align 64, !tbaa !26
  %4072 = fcmp olt <8 x double> %4071, %4062
  %4073 = select <8 x i1> %3656, <8 x i1> splat (i1 true), <8 x i1> %4072
  %4074 = select <8 x i1> %4073, <8 x double> %4071, <8 x double> %4062
  store <8 x double> %4074, ptr %125, align 64, !tbaa !26
  %4075 = fcmp une <8 x double> %4061, zeroinitializer
  %4076 = fcmp ueq <8 x double> %3306, zeroinitializer
  %4077 = or <8 x i1> %4076, %4075
  %4078 = fcmp olt <8 x double> %4057, splat (double 1.800000e+00)
  %4079 = select <8 x i1> %4078, <8 x double> %4057, <8 x double> splat (double 1.800000e+00)
  %4080 = select <8 x i1> %4077, <8 x double> splat (double 1.800000e+00), <8 x double> %4079
  %4081 = fcmp ogt <8 x double> %4080, splat (double 2.000000e-01)
  %4082 = select <8 x i1> %4081, <8 x double> %4080, <8 x double> splat (double 2.000000e-01)
  %4083 = fmul <8 x double> %4062, %4082
  %4084 = fmul <8 x double> %4062, splat (double 4.000000e+00)
  %4085 = fcmp olt <8 x double> %4060, %4084
  %4086 = select <8 x i1> %4085, <8 x double> %4060, <8 x double> %4084
  %4087 = fcmp ogt <8 x double> %4083, %4086
  %4088 = select <8 x i1> %4087, <8 x double> %4083, <8 x double> %4086
  %4089 = select <8 x i1> %3656, <8 x double> %4060, <8 x double> zeroinitializer
  store <8 x double> %4089, ptr %143, align 64, !tbaa !26
  %4090 = select <8 x i1> %3656, <8 x double> %4059, <8 x double> zeroinitializer
  store <8 x double> %4090, ptr %205, align 64, !tbaa !26
  %4091 = load <8 x i64>, ptr %147, align 64, !tbaa !26
  %4092 = and <8 x i64> %4091, %3684
  store <8 x i64> %4092, ptr %147, align 64, !tbaa !26
  br i1 %4058, label %4093, label %4390

4093:                                             ; preds = %4056, %4383
  %4094 = phi i64 [ %4385, %4383 ], [ 0, %4056 ]
  %4095 = phi <8 x double> [ %4384, %4383 ], [ %4088, %4056 ]
  %4096 = load ptr, ptr %129, align 8, !tbaa !28
  %4097 = getelementptr inbounds nuw %struct.Piece, ptr %4096, i64 %4094
  %4098 = getelementptr inbounds nuw i8, ptr %4097, i64 3776
  %4099 = load <8 x double>, ptr %4098, align 64, !tbaa !26
  %4100 = getelementptr inbounds nuw i8, ptr %4097, i64 1472
  %4101 = load <8 x double>, ptr %4100, align 64, !tbaa !26
  %4102 = fmul <8 x double> %4101, splat (double 1.001000e+00)
  %4103 = fcmp ole <8 x double> %4099, %4102
  %4104 = getelementptr inbounds nuw i8, ptr %4097, i64 1600
  %4105 = load <8 x double>, ptr %4104, align 64, !tbaa !26
  %4106 = getelementptr inbounds nuw i8, ptr %4097, i64 4032
  %4107 = load <8 x double>, ptr %4106, align 64, !tbaa !26
  %4108 = fsub <8 x double> %4105, %4107
  %4109 = fmul <8 x double> %4105, splat (double 1.000000e-04)
  %4110 = fcmp ole <8 x double> %4108, %4109
  %4111 = getelementptr inbounds nuw i8, ptr %4097, i64 7360
  %4112 = load <8 x i64>, ptr %4111, align 64, !tbaa !26
  %4113 = and <8 x i64> %4112, %3596
  %4114 = getelementptr inbounds nuw i8, ptr %4097, i64 7296
  %4115 = load <8 x double>, ptr %4114, align 64, !tbaa !26
  %4116 = fcmp oeq <8 x double> %4115, zeroinitializer
  %4117 = and <8 x i1> %4103, %4116
  %4118 = fcmp oeq <8 x double> %4115, splat (double 1.000000e+00)
  %4119 = and <8 x i1> %4110, %4118
  %4120 = or <8 x i1> %4117, %4119
  %4121 = select <8 x i1> %4120, <8 x i64> %4113, <8 x i64> zeroinitializer
  %4122 = fadd <8 x double> %4115, splat (double 1.000000e+00)
  %4123 = icmp eq <8 x i64> %4121, zeroinitializer
  %4124 = select <8 x i1> %4123, <8 x double> %4115, <8 x double> %4122
  store <8 x double> %4124, ptr %4114, align 64, !tbaa !26
  %4125 = getelementptr inbounds nuw i8, ptr %4097, i64 7424
  %4126 = load <8 x i64>, ptr %4125, align 64, !tbaa !26
  %4127 = or <8 x i64> %4121, %4126
  store <8 x i64> %4127, ptr %4125, align 64, !tbaa !26
  %4128 = getelementptr inbounds nuw i8, ptr %4097, i64 896
  %4129 = load <8 x double>, ptr %4128, align 64, !tbaa !26
  %4130 = getelementptr inbounds nuw i8, ptr %4097, i64 5632
  %4131 = load <8 x double>, ptr %4130, align 64, !tbaa !26
  %4132 = getelementptr inbounds nuw i8, ptr %4097, i64 5696
  %4133 = load <8 x double>, ptr %4132, align 64, !tbaa !26
  %4134 = fadd <8 x double> %4131, %4133
  %4135 = fcmp ogt <8 x double> %4134, zeroinitializer
  %4136 = xor <8 x i64> %4112, splat (i64 -1)
  %4137 = and <8 x i64> %3596, %4136
  %4138 = fcmp une <8 x double> %4129, zeroinitializer
  %4139 = or <8 x i1> %4138, %4135
  %4140 = getelementptr inbounds nuw i8, ptr %4097, i64 3840
  %4141 = load <8 x double>, ptr %4140, align 64, !tbaa !26
  %4142 = fmul <8 x double> %4129, splat (double 1.000000e-04)
  %4143 = fcmp ogt <8 x double> %4142, splat (double 0x3E7AD7F29ABCAF48)
  %4144 = select <8 x i1> %4143, <8 x double> %4142, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4145 = fcmp ole <8 x double> %4141, %4144
  %4146 = select <8 x i1> %4145, <8 x i1> %4139, <8 x i1> zeroinitializer
  %4147 = select <8 x i1> %4146, <8 x i64> %4137, <8 x i64> zeroinitializer
  %4148 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4147)
  %4149 = icmp eq i64 %4148, 0
  br i1 %4149, label %4383, label %4150

4150:                                             ; preds = %4093
  %4151 = load i64, ptr %119, align 16, !tbaa !21
  %4152 = load i64, ptr %120, align 8, !tbaa !22
  %4153 = getelementptr inbounds nuw i8, ptr %4097, i64 4416
  %4154 = load <8 x double>, ptr %4153, align 64, !tbaa !26
  %4155 = getelementptr inbounds nuw i8, ptr %4097, i64 5568
  %4156 = load <8 x double>, ptr %4155, align 64, !tbaa !26
  %4157 = getelementptr inbounds nuw i8, ptr %4097, i64 832
  %4158 = load <8 x double>, ptr %4157, align 64, !tbaa !26
  %4159 = getelementptr inbounds nuw i8, ptr %4097, i64 7600
  %4160 = load ptr, ptr %4159, align 16, !tbaa !45
  %4161 = add nsw i64 %4151, -1
  %4162 = getelementptr inbounds <8 x double>, ptr %4160, i64 %4161
  %4163 = load <8 x double>, ptr %4162, align 64, !tbaa !26
  %4164 = fmul <8 x double> %4158, %4163
  %4165 = fneg <8 x double> %4141
  %4166 = fdiv <8 x double> %4165, %4164
  %4167 = fcmp ogt <8 x double> %4166, splat (double 0x3E7AD7F29ABCAF48)
  %4168 = select <8 x i1> %4167, <8 x double> %4166, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4169 = load <8 x double>, ptr %4097, align 64, !tbaa !26
  %4170 = fsub <8 x double> %4169, %4168
  %4171 = getelementptr inbounds nuw i8, ptr %4097, i64 2560
  %4172 = load <8 x double>, ptr %4171, align 64, !tbaa !26
  %4173 = getelementptr inbounds nuw i8, ptr %4097, i64 2624
  %4174 = load <8 x double>, ptr %4173, align 64, !tbaa !26
  %4175 = getelementptr inbounds nuw i8, ptr %4097, i64 2688
  %4176 = load <8 x double>, ptr %4175, align 64, !tbaa !26
  %4177 = getelementptr inbounds nuw i8, ptr %4097, i64 2752
  %4178 = load <8 x double>, ptr %4177, align 64, !tbaa !26
  %4179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4170, <8 x double> %4178, <8 x double> %4176)
  %4180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4170, <8 x double> %4179, <8 x double> %4174)
  %4181 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4170, <8 x double> %4180, <8 x double> %4172)
  %4182 = getelementptr inbounds nuw i8, ptr %4097, i64 7568
  %4183 = load ptr, ptr %4182, align 16, !tbaa !44
  %4184 = getelementptr inbounds <8 x double>, ptr %4183, i64 %4161
  %4185 = load <8 x double>, ptr %4184, align 64, !tbaa !26
  %4186 = getelementptr inbounds nuw i8, ptr %4097, i64 7552
  %4187 = load i64, ptr %4186, align 64, !tbaa !31
  %4188 = icmp sgt i64 %4151, %4187
  br i1 %4188, label %4192, label %4189

4189:                                             ; preds = %4150
  %4190 = getelementptr inbounds nuw i8, ptr %4097, i64 640
  %4191 = load <8 x double>, ptr %4190, align 64, !tbaa !26
  br label %4203

4192:                                             ; preds = %4150
  %4193 = getelementptr inbounds nuw i8, ptr %4097, i64 384
  %4194 = load <8 x double>, ptr %4193, align 64, !tbaa !26
  %4195 = getelementptr inbounds nuw i8, ptr %4097, i64 448
  %4196 = load <8 x double>, ptr %4195, align 64, !tbaa !26
  %4197 = getelementptr inbounds nuw i8, ptr %4097, i64 512
  %4198 = load <8 x double>, ptr %4197, align 64, !tbaa !26
  %4199 = fmul <8 x double> %4185, %4198
  %4200 = fmul <8 x double> %4199, splat (double 0x3FD5555555555555)
  %4201 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4196, <8 x double> splat (double 5.000000e-01), <8 x double> %4200)
  %4202 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4185, <8 x double> %4201, <8 x double> %4194)
  br label %4203

4203:                                             ; preds = %4192, %4189
  %4204 = phi <8 x double> [ %4191, %4189 ], [ %4202, %4192 ]
  %4205 = fmul <8 x double> %4185, %4204
  %4206 = icmp sgt i64 %4151, 0
  br i1 %4206, label %4207, label %4217

4207:                                             ; preds = %4203
  %4208 = getelementptr inbounds nuw i8, ptr %4097, i64 640
  %4209 = getelementptr inbounds nuw i8, ptr %4097, i64 384
  %4210 = getelementptr inbounds nuw i8, ptr %4097, i64 448
  %4211 = getelementptr inbounds nuw i8, ptr %4097, i64 512
  %4212 = getelementptr inbounds nuw i8, ptr %4097, i64 1536
  %4213 = getelementptr inbounds nuw i8, ptr %4097, i64 7648
  %4214 = icmp eq <8 x i64> %4147, zeroinitializer
  br label %4229

4215:                                             ; preds = %4308
  %4216 = load <8 x double>, ptr %4097, align 64, !tbaa !26
  br label %4217

4217:                                             ; preds = %4215, %4203
  %4218 = phi <8 x double> [ %4216, %4215 ], [ %4169, %4203 ]
  %4219 = fsub <8 x double> %4218, %4170
  %4220 = sitofp i64 %4152 to double
  %4221 = insertelement <8 x double> poison, double %4220, i64 0
  %4222 = shufflevector <8 x double> %4221, <8 x double> poison, <8 x i32> zeroinitializer
  %4223 = fdiv <8 x double> %4219, %4222
  %4224 = icmp sgt i64 %4152, 0
  br i1 %4224, label %4225, label %4339

4225:                                             ; preds = %4217
  %4226 = getelementptr inbounds nuw i8, ptr %4097, i64 7736
  %4227 = icmp eq <8 x i64> %4147, zeroinitializer
  %4228 = getelementptr inbounds nuw i8, ptr %4097, i64 7688
  br label %4316

4229:                                             ; preds = %4207, %4308
  %4230 = phi <8 x double> [ %4185, %4207 ], [ %4278, %4308 ]
  %4231 = phi <8 x double> [ %4205, %4207 ], [ %4279, %4308 ]
  %4232 = phi <8 x double> [ %4181, %4207 ], [ %4277, %4308 ]
  %4233 = phi i64 [ %4161, %4207 ], [ %4314, %4308 ]
  %4234 = icmp eq i64 %4233, 0
  br i1 %4234, label %4276, label %4235

4235:                                             ; preds = %4229
  %4236 = load ptr, ptr %4182, align 16, !tbaa !44
  %4237 = getelementptr <8 x double>, ptr %4236, i64 %4233
  %4238 = getelementptr i8, ptr %4237, i64 -64
  %4239 = load <8 x double>, ptr %4238, align 64, !tbaa !26
  %4240 = load i64, ptr %4186, align 64, !tbaa !31
  %4241 = icmp sgt i64 %4233, %4240
  br i1 %4241, label %4244, label %4242

4242:                                             ; preds = %4235
  %4243 = load <8 x double>, ptr %4208, align 64, !tbaa !26
  br label %4252

4244:                                             ; preds = %4235
  %4245 = load <8 x double>, ptr %4209, align 64, !tbaa !26
  %4246 = load <8 x double>, ptr %4210, align 64, !tbaa !26
  %4247 = load <8 x double>, ptr %4211, align 64, !tbaa !26
  %4248 = fmul <8 x double> %4239, %4247
  %4249 = fmul <8 x double> %4248, splat (double 0x3FD5555555555555)
  %4250 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4246, <8 x double> splat (double 5.000000e-01), <8 x double> %4249)
  %4251 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4239, <8 x double> %4250, <8 x double> %4245)
  br label %4252

4252:                                             ; preds = %4242, %4244
  %4253 = phi <8 x double> [ %4251, %4244 ], [ %4243, %4242 ]
  %4254 = fmul <8 x double> %4239, %4253
  %4255 = icmp slt i64 %4233, %4240
  br i1 %4255, label %4256, label %4263

4256:                                             ; preds = %4252
  %4257 = load ptr, ptr %4213, align 32, !tbaa !70
  %4258 = getelementptr inbounds nuw <8 x double>, ptr %4257, i64 %4233
  %4259 = load <8 x double>, ptr %4258, align 64, !tbaa !26
  %4260 = load <8 x double>, ptr %4212, align 64, !tbaa !26
  %4261 = fmul <8 x double> %4259, %4260
  %4262 = fmul <8 x double> %4259, %4260
  br label %4272

4263:                                             ; preds = %4252
  %4264 = load <8 x double>, ptr %4212, align 64, !tbaa !26
  %4265 = load ptr, ptr %4213, align 32, !tbaa !70
  %4266 = getelementptr inbounds nuw <8 x double>, ptr %4265, i64 %4233
  %4267 = load <8 x double>, ptr %4266, align 64, !tbaa !26
  %4268 = fsub <8 x double> %4181, %4264
  %4269 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4267, <8 x double> %4268, <8 x double> %4264)
  %4270 = fsub <8 x double> %4154, %4264
  %4271 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4267, <8 x double> %4270, <8 x double> %4264)
  br label %4272

4272:                                             ; preds = %4263, %4256
  %4273 = phi <8 x double> [ %4261, %4256 ], [ %4269, %4263 ]
  %4274 = phi <8 x double> [ %4262, %4256 ], [ %4271, %4263 ]
  %4275 = fsub <8 x double> %4274, %4273
  br label %4276

4276:                                             ; preds = %4229, %4272
  %4277 = phi <8 x double> [ %4273, %4272 ], [ zeroinitializer, %4229 ]
  %4278 = phi <8 x double> [ %4239, %4272 ], [ %4230, %4229 ]
  %4279 = phi <8 x double> [ %4254, %4272 ], [ %4231, %4229 ]
  %4280 = phi <8 x double> [ %4275, %4272 ], [ zeroinitializer, %4229 ]
  %4281 = fsub <8 x double> %4232, %4277
  %4282 = fdiv <8 x double> %4280, %4281
  %4283 = fsub <8 x double> %4279, %4231
  %4284 = fmul <8 x double> %4283, %4282
  %4285 = load ptr, ptr %4159, align 16, !tbaa !45
  %4286 = getelementptr inbounds nuw <8 x double>, ptr %4285, i64 %4233
  %4287 = load <8 x double>, ptr %4286, align 64, !tbaa !26
  br i1 %4234, label %4291, label %4288

4288:                                             ; preds = %4276
  %4289 = getelementptr i8, ptr %4286, i64 -64
  %4290 = load <8 x double>, ptr %4289, align 64, !tbaa !26
  br label %4291

4291:                                             ; preds = %4288, %4276
  %4292 = phi <8 x double> [ %4290, %4288 ], [ %4287, %4276 ]
  %4293 = fsub <8 x double> %4292, %4287
  %4294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4293, <8 x double> %4282, <8 x double> %4287)
  %4295 = select <8 x i1> %4214, <8 x double> %4287, <8 x double> %4294
  store <8 x double> %4295, ptr %4286, align 64, !tbaa !26
  %4296 = load ptr, ptr %4182, align 16, !tbaa !44
  %4297 = getelementptr inbounds nuw <8 x double>, ptr %4296, i64 %4233
  %4298 = load i64, ptr %4186, align 64, !tbaa !31
  %4299 = icmp slt i64 %4233, %4298
  br i1 %4299, label %4300, label %4302

4300:                                             ; preds = %4291
  %4301 = load <8 x double>, ptr %4208, align 64, !tbaa !26
  br label %4308

4302:                                             ; preds = %4291
  %4303 = load <8 x double>, ptr %4209, align 64, !tbaa !26
  %4304 = load <8 x double>, ptr %4210, align 64, !tbaa !26
  %4305 = load <8 x double>, ptr %4211, align 64, !tbaa !26
  %4306 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4230, <8 x double> %4305, <8 x double> %4304)
  %4307 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4230, <8 x double> %4306, <8 x double> %4303)
  br label %4308

4308:                                             ; preds = %4302, %4300
  %4309 = phi <8 x double> [ %4301, %4300 ], [ %4307, %4302 ]
  %4310 = fdiv <8 x double> %4284, %4309
  %4311 = fadd <8 x double> %4230, %4310
  %4312 = load <8 x double>, ptr %4297, align 64, !tbaa !26
  %4313 = select <8 x i1> %4214, <8 x double> %4312, <8 x double> %4311
  store <8 x double> %4313, ptr %4297, align 64, !tbaa !26
  %4314 = add nsw i64 %4233, -1
  %4315 = icmp sgt i64 %4233, 0
  br i1 %4315, label %4229, label %4215, !llvm.loop !129

4316:                                             ; preds = %4225, %4316
  %4317 = phi i64 [ 0, %4225 ], [ %4337, %4316 ]
  %4318 = load ptr, ptr %4226, align 8, !tbaa !47
  %4319 = getelementptr inbounds nuw <8 x double>, ptr %4318, i64 %4317
  %4320 = uitofp nneg i64 %4317 to double
  %4321 = insertelement <8 x double> poison, double %4320, i64 0
  %4322 = shufflevector <8 x double> %4321, <8 x double> poison, <8 x i32> zeroinitializer
  %4323 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4322, <8 x double> %4223, <8 x double> %4170)
  %4324 = load <8 x double>, ptr %4171, align 64, !tbaa !26
  %4325 = load <8 x double>, ptr %4173, align 64, !tbaa !26
  %4326 = load <8 x double>, ptr %4175, align 64, !tbaa !26
  %4327 = load <8 x double>, ptr %4177, align 64, !tbaa !26
  %4328 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4323, <8 x double> %4327, <8 x double> %4326)
  %4329 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4323, <8 x double> %4328, <8 x double> %4325)
  %4330 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4323, <8 x double> %4329, <8 x double> %4324)
  %4331 = load <8 x double>, ptr %4319, align 64, !tbaa !26
  %4332 = select <8 x i1> %4227, <8 x double> %4331, <8 x double> %4330
  store <8 x double> %4332, ptr %4319, align 64, !tbaa !26
  %4333 = load ptr, ptr %4228, align 8, !tbaa !48
  %4334 = getelementptr inbounds nuw <8 x double>, ptr %4333, i64 %4317
  %4335 = load <8 x double>, ptr %4334, align 64, !tbaa !26
  %4336 = select <8 x i1> %4227, <8 x double> %4335, <8 x double> %4156
  store <8 x double> %4336, ptr %4334, align 64, !tbaa !26
  %4337 = add nuw nsw i64 %4317, 1
  %4338 = icmp eq i64 %4337, %4152
  br i1 %4338, label %4339, label %4316, !llvm.loop !130

4339:                                             ; preds = %4316, %4217
  %4340 = fsub <8 x double> %4154, %4181
  %4341 = getelementptr inbounds nuw i8, ptr %4097, i64 3712
  %4342 = getelementptr inbounds nuw i8, ptr %4097, i64 7736
  %4343 = load ptr, ptr %4342, align 8, !tbaa !47
  %4344 = getelementptr inbounds <8 x double>, ptr %4343, i64 %4152
  %4345 = getelementptr inbounds nuw i8, ptr %4097, i64 1408
  %4346 = load <8 x double>, ptr %4345, align 64, !tbaa !26
  %4347 = load <8 x double>, ptr %4344, align 64, !tbaa !26
  %4348 = icmp eq <8 x i64> %4147, zeroinitializer
  %4349 = select <8 x i1> %4348, <8 x double> %4347, <8 x double> %4346
  store <8 x double> %4349, ptr %4344, align 64, !tbaa !26
  %4350 = load <8 x double>, ptr %4341, align 64, !tbaa !26
  %4351 = select <8 x i1> %4348, <8 x double> %4350, <8 x double> %4170
  store <8 x double> %4351, ptr %4341, align 64, !tbaa !26
  %4352 = load <8 x double>, ptr %4098, align 64, !tbaa !26
  %4353 = select <8 x i1> %4348, <8 x double> %4352, <8 x double> %4181
  store <8 x double> %4353, ptr %4098, align 64, !tbaa !26
  %4354 = load <8 x double>, ptr %4153, align 64, !tbaa !26
  %4355 = select <8 x i1> %4348, <8 x double> %4354, <8 x double> %4181
  store <8 x double> %4355, ptr %4153, align 64, !tbaa !26
  %4356 = getelementptr inbounds nuw i8, ptr %4097, i64 3904
  %4357 = load <8 x double>, ptr %4356, align 64, !tbaa !26
  %4358 = fneg <8 x double> %4340
  %4359 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4358, <8 x double> %4164, <8 x double> %4357)
  %4360 = select <8 x i1> %4348, <8 x double> %4357, <8 x double> %4359
  store <8 x double> %4360, ptr %4356, align 64, !tbaa !26
  %4361 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4340, <8 x double> %4164, <8 x double> %4141)
  %4362 = load <8 x double>, ptr %4140, align 64, !tbaa !26
  %4363 = select <8 x i1> %4348, <8 x double> %4362, <8 x double> %4361
  store <8 x double> %4363, ptr %4140, align 64, !tbaa !26
  %4364 = getelementptr inbounds nuw i8, ptr %4097, i64 4160
  %4365 = load <8 x double>, ptr %4364, align 64, !tbaa !26
  %4366 = getelementptr inbounds nuw i8, ptr %4097, i64 768
  %4367 = load <8 x double>, ptr %4366, align 64, !tbaa !26
  %4368 = fneg <8 x double> %4367
  %4369 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4368, <8 x double> %4156, <8 x double> %4205)
  %4370 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4340, <8 x double> %4369, <8 x double> %4365)
  %4371 = select <8 x i1> %4348, <8 x double> %4365, <8 x double> %4370
  store <8 x double> %4371, ptr %4364, align 64, !tbaa !26
  %4372 = load <8 x i64>, ptr %4111, align 64, !tbaa !26
  %4373 = or <8 x i64> %4372, %4147
  store <8 x i64> %4373, ptr %4111, align 64, !tbaa !26
  %4374 = load <8 x i64>, ptr %4125, align 64, !tbaa !26
  %4375 = or <8 x i64> %4374, %4147
  store <8 x i64> %4375, ptr %4125, align 64, !tbaa !26
  %4376 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %4377 = fmul <8 x double> %4376, splat (double 5.000000e+00)
  %4378 = fcmp olt <8 x double> %4095, %4377
  %4379 = select <8 x i1> %4378, <8 x double> %4095, <8 x double> %4377
  %4380 = icmp ne <8 x i64> %4147, zeroinitializer
  %4381 = select <8 x i1> %4138, <8 x i1> %4380, <8 x i1> zeroinitializer
  %4382 = select <8 x i1> %4381, <8 x double> %4379, <8 x double> %4095
  br label %4383

4383:                                             ; preds = %4339, %4093
  %4384 = phi <8 x double> [ %4382, %4339 ], [ %4095, %4093 ]
  %4385 = add nuw nsw i64 %4094, 1
  %4386 = load i64, ptr %144, align 8, !tbaa !20
  %4387 = icmp slt i64 %4385, %4386
  br i1 %4387, label %4093, label %4388, !llvm.loop !131

4388:                                             ; preds = %4383
  %4389 = load <8 x double>, ptr %136, align 64, !tbaa !26
  br label %4390

4390:                                             ; preds = %4388, %4056
  %4391 = phi <8 x double> [ %4065, %4056 ], [ %4389, %4388 ]
  %4392 = phi <8 x double> [ %4088, %4056 ], [ %4384, %4388 ]
  %4393 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4392)
  %4394 = insertelement <8 x double> poison, double %4393, i64 0
  %4395 = shufflevector <8 x double> %4394, <8 x double> poison, <8 x i32> zeroinitializer
  %4396 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %4397 = select <8 x i1> %3656, <8 x double> %4396, <8 x double> %4395
  store <8 x double> %4397, ptr %139, align 64, !tbaa !26
  %4398 = load ptr, ptr %213, align 64, !tbaa !36
  %4399 = getelementptr inbounds nuw i8, ptr %4398, i64 64
  store <8 x double> %4391, ptr %4398, align 64, !tbaa !26
  %4400 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4401 = getelementptr inbounds nuw i8, ptr %4398, i64 128
  store <8 x double> %4400, ptr %4399, align 64, !tbaa !26
  %4402 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4403 = getelementptr inbounds nuw i8, ptr %4398, i64 192
  store <8 x double> %4402, ptr %4401, align 64, !tbaa !26
  %4404 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %4405 = getelementptr inbounds nuw i8, ptr %4398, i64 256
  store <8 x double> %4404, ptr %4403, align 64, !tbaa !26
  %4406 = load i64, ptr %144, align 8, !tbaa !20
  %4407 = icmp sgt i64 %4406, 0
  br i1 %4407, label %4412, label %4408

4408:                                             ; preds = %4412, %4390
  %4409 = phi ptr [ %4405, %4390 ], [ %4418, %4412 ]
  %4410 = load i64, ptr %215, align 8, !tbaa !132
  %4411 = icmp eq i64 %4410, 0
  br i1 %4411, label %4547, label %4422

4412:                                             ; preds = %4390, %4412
  %4413 = phi ptr [ %4418, %4412 ], [ %4405, %4390 ]
  %4414 = phi i64 [ %4419, %4412 ], [ 0, %4390 ]
  %4415 = load ptr, ptr %129, align 8, !tbaa !28
  %4416 = getelementptr inbounds nuw %struct.Piece, ptr %4415, i64 %4414, i32 35
  %4417 = load <8 x double>, ptr %4416, align 64, !tbaa !26
  %4418 = getelementptr inbounds nuw i8, ptr %4413, i64 64
  store <8 x double> %4417, ptr %4413, align 64, !tbaa !26
  %4419 = add nuw nsw i64 %4414, 1
  %4420 = load i64, ptr %144, align 8, !tbaa !20
  %4421 = icmp slt i64 %4419, %4420
  br i1 %4421, label %4412, label %4408, !llvm.loop !133

4422:                                             ; preds = %4408
  %4423 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4424 = getelementptr inbounds nuw i8, ptr %4409, i64 64
  store <8 x double> %4423, ptr %4409, align 64, !tbaa !26
  %4425 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4426 = getelementptr inbounds nuw i8, ptr %4409, i64 128
  store <8 x double> %4425, ptr %4424, align 64, !tbaa !26
  %4427 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4428 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %4429 = fsub <8 x double> %4427, %4428
  %4430 = fcmp ogt <8 x double> %4429, zeroinitializer
  %4431 = select <8 x i1> %4430, <8 x double> %4429, <8 x double> zeroinitializer
  store <8 x double> %4431, ptr %4426, align 64, !tbaa !26
  %4432 = load i64, ptr %144, align 8, !tbaa !20
  %4433 = icmp sgt i64 %4432, 0
  br i1 %4433, label %4434, label %4547

4434:                                             ; preds = %4422
  %4435 = getelementptr inbounds nuw i8, ptr %4409, i64 192
  br label %4436

4436:                                             ; preds = %4434, %4436
  %4437 = phi ptr [ %4543, %4436 ], [ %4435, %4434 ]
  %4438 = phi i64 [ %4544, %4436 ], [ 0, %4434 ]
  %4439 = load ptr, ptr %129, align 8, !tbaa !28
  %4440 = getelementptr inbounds nuw %struct.Piece, ptr %4439, i64 %4438
  %4441 = getelementptr inbounds nuw i8, ptr %4440, i64 7568
  %4442 = load ptr, ptr %4441, align 16, !tbaa !44
  %4443 = load i64, ptr %119, align 16, !tbaa !21
  %4444 = getelementptr <8 x double>, ptr %4442, i64 %4443
  %4445 = getelementptr i8, ptr %4444, i64 -64
  %4446 = load <8 x double>, ptr %4445, align 64, !tbaa !26
  %4447 = getelementptr inbounds nuw i8, ptr %4440, i64 6848
  %4448 = load <8 x double>, ptr %4447, align 64, !tbaa !26
  %4449 = getelementptr inbounds nuw i8, ptr %4440, i64 5568
  %4450 = load <8 x double>, ptr %4449, align 64, !tbaa !26
  %4451 = fsub <8 x double> %4450, %4446
  %4452 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4448, <8 x double> %4451, <8 x double> %4446)
  %4453 = getelementptr inbounds nuw i8, ptr %4437, i64 64
  store <8 x double> %4452, ptr %4437, align 64, !tbaa !26
  %4454 = getelementptr inbounds nuw i8, ptr %4440, i64 6400
  %4455 = load <8 x double>, ptr %4454, align 64, !tbaa !26
  %4456 = getelementptr inbounds nuw i8, ptr %4437, i64 128
  store <8 x double> %4455, ptr %4453, align 64, !tbaa !26
  %4457 = load <8 x double>, ptr %4440, align 64, !tbaa !26
  %4458 = getelementptr inbounds nuw i8, ptr %4440, i64 3712
  %4459 = load <8 x double>, ptr %4458, align 64, !tbaa !26
  %4460 = fsub <8 x double> %4457, %4459
  %4461 = getelementptr inbounds nuw i8, ptr %4437, i64 192
  store <8 x double> %4460, ptr %4456, align 64, !tbaa !26
  %4462 = getelementptr inbounds nuw i8, ptr %4440, i64 4032
  %4463 = load <8 x double>, ptr %4462, align 64, !tbaa !26
  %4464 = getelementptr inbounds nuw i8, ptr %4437, i64 256
  store <8 x double> %4463, ptr %4461, align 64, !tbaa !26
  %4465 = getelementptr inbounds nuw i8, ptr %4440, i64 3968
  %4466 = load <8 x double>, ptr %4465, align 64, !tbaa !26
  %4467 = getelementptr inbounds nuw i8, ptr %4437, i64 320
  store <8 x double> %4466, ptr %4464, align 64, !tbaa !26
  %4468 = getelementptr inbounds nuw i8, ptr %4440, i64 3840
  %4469 = load <8 x double>, ptr %4468, align 64, !tbaa !26
  %4470 = getelementptr inbounds nuw i8, ptr %4437, i64 384
  store <8 x double> %4469, ptr %4467, align 64, !tbaa !26
  %4471 = getelementptr inbounds nuw i8, ptr %4440, i64 4096
  %4472 = load <8 x double>, ptr %4471, align 64, !tbaa !26
  %4473 = getelementptr inbounds nuw i8, ptr %4437, i64 448
  store <8 x double> %4472, ptr %4470, align 64, !tbaa !26
  %4474 = getelementptr inbounds nuw i8, ptr %4440, i64 7688
  %4475 = load i64, ptr %120, align 8, !tbaa !22
  %4476 = sitofp i64 %4475 to double
  %4477 = tail call double @llvm.fmuladd.f64(double %4476, double 7.500000e-01, double -5.000000e-01)
  %4478 = fcmp ogt double %4477, 0.000000e+00
  %4479 = select i1 %4478, double %4477, double 0.000000e+00
  %4480 = fptosi double %4479 to i64
  %4481 = add nsw i64 %4475, -2
  %4482 = tail call i64 @llvm.smin.i64(i64 %4481, i64 %4480)
  %4483 = sitofp i64 %4482 to double
  %4484 = fsub double %4477, %4483
  %4485 = fsub double 1.000000e+00, %4484
  %4486 = insertelement <8 x double> poison, double %4485, i64 0
  %4487 = shufflevector <8 x double> %4486, <8 x double> poison, <8 x i32> zeroinitializer
  %4488 = load ptr, ptr %4474, align 8, !tbaa !48
  %4489 = getelementptr inbounds <8 x double>, ptr %4488, i64 %4482
  %4490 = load <8 x double>, ptr %4489, align 64, !tbaa !26
  %4491 = insertelement <8 x double> poison, double %4484, i64 0
  %4492 = shufflevector <8 x double> %4491, <8 x double> poison, <8 x i32> zeroinitializer
  %4493 = getelementptr i8, ptr %4489, i64 64
  %4494 = load <8 x double>, ptr %4493, align 64, !tbaa !26
  %4495 = fmul <8 x double> %4494, %4492
  %4496 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4487, <8 x double> %4490, <8 x double> %4495)
  store <8 x double> %4496, ptr %4473, align 64, !tbaa !26
  %4497 = load i64, ptr %120, align 8, !tbaa !22
  %4498 = sitofp i64 %4497 to double
  %4499 = tail call double @llvm.fmuladd.f64(double %4498, double 5.000000e-01, double -5.000000e-01)
  %4500 = fcmp ogt double %4499, 0.000000e+00
  %4501 = select i1 %4500, double %4499, double 0.000000e+00
  %4502 = fptosi double %4501 to i64
  %4503 = add nsw i64 %4497, -2
  %4504 = tail call i64 @llvm.smin.i64(i64 %4503, i64 %4502)
  %4505 = sitofp i64 %4504 to double
  %4506 = fsub double %4499, %4505
  %4507 = fsub double 1.000000e+00, %4506
  %4508 = insertelement <8 x double> poison, double %4507, i64 0
  %4509 = shufflevector <8 x double> %4508, <8 x double> poison, <8 x i32> zeroinitializer
  %4510 = load ptr, ptr %4474, align 8, !tbaa !48
  %4511 = getelementptr inbounds <8 x double>, ptr %4510, i64 %4504
  %4512 = load <8 x double>, ptr %4511, align 64, !tbaa !26
  %4513 = insertelement <8 x double> poison, double %4506, i64 0
  %4514 = shufflevector <8 x double> %4513, <8 x double> poison, <8 x i32> zeroinitializer
  %4515 = getelementptr i8, ptr %4511, i64 64
  %4516 = load <8 x double>, ptr %4515, align 64, !tbaa !26
  %4517 = fmul <8 x double> %4516, %4514
  %4518 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4509, <8 x double> %4512, <8 x double> %4517)
  %4519 = getelementptr inbounds nuw i8, ptr %4437, i64 512
  store <8 x double> %4518, ptr %4519, align 64, !tbaa !26
  %4520 = load i64, ptr %120, align 8, !tbaa !22
  %4521 = sitofp i64 %4520 to double
  %4522 = tail call double @llvm.fmuladd.f64(double %4521, double 2.500000e-01, double -5.000000e-01)
  %4523 = fcmp ogt double %4522, 0.000000e+00
  %4524 = select i1 %4523, double %4522, double 0.000000e+00
  %4525 = fptosi double %4524 to i64
  %4526 = add nsw i64 %4520, -2
  %4527 = tail call i64 @llvm.smin.i64(i64 %4526, i64 %4525)
  %4528 = sitofp i64 %4527 to double
  %4529 = fsub double %4522, %4528
  %4530 = fsub double 1.000000e+00, %4529
  %4531 = insertelement <8 x double> poison, double %4530, i64 0
  %4532 = shufflevector <8 x double> %4531, <8 x double> poison, <8 x i32> zeroinitializer
  %4533 = load ptr, ptr %4474, align 8, !tbaa !48
  %4534 = getelementptr inbounds <8 x double>, ptr %4533, i64 %4527
  %4535 = load <8 x double>, ptr %4534, align 64, !tbaa !26
  %4536 = insertelement <8 x double> poison, double %4529, i64 0
  %4537 = shufflevector <8 x double> %4536, <8 x double> poison, <8 x i32> zeroinitializer
  %4538 = getelementptr i8, ptr %4534, i64 64
  %4539 = load <8 x double>, ptr %4538, align 64, !tbaa !26
  %4540 = fmul <8 x double> %4539, %4537
  %4541 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4532, <8 x double> %4535, <8 x double> %4540)
  %4542 = getelementptr inbounds nuw i8, ptr %4437, i64 576
  store <8 x double> %4541, ptr %4542, align 64, !tbaa !26
  %4543 = getelementptr inbounds nuw i8, ptr %4437, i64 640
  %4544 = add nuw nsw i64 %4438, 1
  %4545 = load i64, ptr %144, align 8, !tbaa !20
  %4546 = icmp slt i64 %4544, %4545
  br i1 %4546, label %4436, label %4547, !llvm.loop !134

4547:                                             ; preds = %4436, %4422, %4408
  %4548 = getelementptr inbounds nuw i8, ptr %4409, i64 192
  %4549 = extractelement <8 x i64> %3596, i64 0
  %4550 = icmp eq i64 %4549, 0
  br i1 %4550, label %4690, label %4551

4551:                                             ; preds = %4547
  %4552 = load i64, ptr %216, align 8, !tbaa !30
  %4553 = load i64, ptr %217, align 8, !tbaa !135
  %4554 = icmp eq i64 %4552, %4553
  br i1 %4554, label %4557, label %4555

4555:                                             ; preds = %4551
  %4556 = load ptr, ptr %221, align 8, !tbaa !136
  br label %4570

4557:                                             ; preds = %4551
  %4558 = load i64, ptr %121, align 8, !tbaa !30
  %4559 = load ptr, ptr %218, align 8, !tbaa !137
  %4560 = load i64, ptr %112, align 8, !tbaa !39
  %4561 = getelementptr inbounds i64, ptr %4559, i64 %4560
  store i64 %4558, ptr %4561, align 8, !tbaa !30
  %4562 = load ptr, ptr %219, align 8, !tbaa !138
  %4563 = load i64, ptr %112, align 8, !tbaa !39
  %4564 = add nsw i64 %4563, 1
  store i64 %4564, ptr %112, align 8, !tbaa !39
  %4565 = load i64, ptr %217, align 8, !tbaa !135
  %4566 = mul nsw i64 %4565, %4563
  %4567 = load i64, ptr %220, align 8, !tbaa !14
  %4568 = mul nsw i64 %4566, %4567
  %4569 = getelementptr inbounds double, ptr %4562, i64 %4568
  store ptr %4569, ptr %221, align 8, !tbaa !136
  br label %4570

4570:                                             ; preds = %4555, %4557
  %4571 = phi i64 [ %4552, %4555 ], [ 0, %4557 ]
  %4572 = phi ptr [ %4556, %4555 ], [ %4569, %4557 ]
  %4573 = add nsw i64 %4571, 1
  store i64 %4573, ptr %216, align 8, !tbaa !30
  %4574 = load i64, ptr %220, align 8, !tbaa !14
  %4575 = mul nsw i64 %4574, %4571
  %4576 = getelementptr inbounds double, ptr %4572, i64 %4575
  %4577 = load ptr, ptr %213, align 64, !tbaa !36
  %4578 = icmp ult ptr %4577, %4405
  br i1 %4578, label %4637, label %4579

4579:                                             ; preds = %4637, %4570
  %4580 = phi ptr [ %4576, %4570 ], [ %4641, %4637 ]
  %4581 = load i64, ptr %128, align 64, !tbaa !16
  %4582 = icmp sgt i64 %4581, 0
  br i1 %4582, label %4583, label %4625

4583:                                             ; preds = %4579
  %4584 = and i64 %4581, 3
  %4585 = icmp ult i64 %4581, 4
  br i1 %4585, label %4610, label %4586

4586:                                             ; preds = %4583
  %4587 = and i64 %4581, 9223372036854775804
  br label %4588

4588:                                             ; preds = %4588, %4586
  %4589 = phi i64 [ 0, %4586 ], [ %4607, %4588 ]
  %4590 = phi ptr [ %4580, %4586 ], [ %4604, %4588 ]
  %4591 = phi i64 [ 0, %4586 ], [ %4608, %4588 ]
  %4592 = getelementptr i8, ptr %4590, i64 8
  %4593 = load <8 x double>, ptr %4405, align 64, !tbaa !26
  %4594 = extractelement <8 x double> %4593, i64 %4589
  store double %4594, ptr %4590, align 8, !tbaa !40
  %4595 = or disjoint i64 %4589, 1
  %4596 = getelementptr i8, ptr %4590, i64 16
  %4597 = load <8 x double>, ptr %4405, align 64, !tbaa !26
  %4598 = extractelement <8 x double> %4597, i64 %4595
  store double %4598, ptr %4592, align 8, !tbaa !40
  %4599 = or disjoint i64 %4589, 2
  %4600 = getelementptr i8, ptr %4590, i64 24
  %4601 = load <8 x double>, ptr %4405, align 64, !tbaa !26
  %4602 = extractelement <8 x double> %4601, i64 %4599
  store double %4602, ptr %4596, align 8, !tbaa !40
  %4603 = or disjoint i64 %4589, 3
  %4604 = getelementptr i8, ptr %4590, i64 32
  %4605 = load <8 x double>, ptr %4405, align 64, !tbaa !26
  %4606 = extractelement <8 x double> %4605, i64 %4603
  store double %4606, ptr %4600, align 8, !tbaa !40
  %4607 = add nuw nsw i64 %4589, 4
  %4608 = add i64 %4591, 4
  %4609 = icmp eq i64 %4608, %4587
  br i1 %4609, label %4610, label %4588, !llvm.loop !139

4610:                                             ; preds = %4588, %4583
  %4611 = phi ptr [ poison, %4583 ], [ %4604, %4588 ]
  %4612 = phi i64 [ 0, %4583 ], [ %4607, %4588 ]
  %4613 = phi ptr [ %4580, %4583 ], [ %4604, %4588 ]
  %4614 = icmp eq i64 %4584, 0
  br i1 %4614, label %4625, label %4615

4615:                                             ; preds = %4610, %4615
  %4616 = phi i64 [ %4622, %4615 ], [ %4612, %4610 ]
  %4617 = phi ptr [ %4619, %4615 ], [ %4613, %4610 ]
  %4618 = phi i64 [ %4623, %4615 ], [ 0, %4610 ]
  %4619 = getelementptr i8, ptr %4617, i64 8
  %4620 = load <8 x double>, ptr %4405, align 64, !tbaa !26
  %4621 = extractelement <8 x double> %4620, i64 %4616
  store double %4621, ptr %4617, align 8, !tbaa !40
  %4622 = add nuw nsw i64 %4616, 1
  %4623 = add i64 %4618, 1
  %4624 = icmp eq i64 %4623, %4584
  br i1 %4624, label %4625, label %4615, !llvm.loop !140

4625:                                             ; preds = %4610, %4615, %4579
  %4626 = phi ptr [ %4580, %4579 ], [ %4611, %4610 ], [ %4619, %4615 ]
  %4627 = load i64, ptr %215, align 8, !tbaa !132
  %4628 = icmp eq i64 %4627, 0
  br i1 %4628, label %4690, label %4629

4629:                                             ; preds = %4625
  %4630 = load double, ptr %4409, align 8, !tbaa !40
  %4631 = getelementptr inbounds nuw i8, ptr %4626, i64 8
  store double %4630, ptr %4626, align 8, !tbaa !40
  %4632 = getelementptr inbounds nuw i8, ptr %4409, i64 64
  %4633 = load double, ptr %4632, align 8, !tbaa !40
  %4634 = getelementptr inbounds nuw i8, ptr %4626, i64 16
  store double %4633, ptr %4631, align 8, !tbaa !40
  %4635 = getelementptr inbounds nuw i8, ptr %4409, i64 128
  %4636 = load double, ptr %4635, align 8, !tbaa !40
  store double %4636, ptr %4634, align 8, !tbaa !40
  br i1 %4582, label %4644, label %4690

4637:                                             ; preds = %4570, %4637
  %4638 = phi ptr [ %4642, %4637 ], [ %4577, %4570 ]
  %4639 = phi ptr [ %4641, %4637 ], [ %4576, %4570 ]
  %4640 = load double, ptr %4638, align 8, !tbaa !40
  %4641 = getelementptr inbounds nuw i8, ptr %4639, i64 8
  store double %4640, ptr %4639, align 8, !tbaa !40
  %4642 = getelementptr inbounds nuw i8, ptr %4638, i64 64
  %4643 = icmp ult ptr %4642, %4405
  br i1 %4643, label %4637, label %4579, !llvm.loop !142

4644:                                             ; preds = %4629
  %4645 = getelementptr inbounds nuw i8, ptr %4626, i64 24
  %4646 = getelementptr inbounds nuw i8, ptr %4409, i64 256
  %4647 = getelementptr inbounds nuw i8, ptr %4409, i64 320
  %4648 = getelementptr inbounds nuw i8, ptr %4409, i64 384
  %4649 = getelementptr inbounds nuw i8, ptr %4409, i64 448
  %4650 = getelementptr inbounds nuw i8, ptr %4409, i64 512
  %4651 = getelementptr inbounds nuw i8, ptr %4409, i64 576
  %4652 = getelementptr inbounds nuw i8, ptr %4409, i64 640
  %4653 = getelementptr inbounds nuw i8, ptr %4409, i64 704
  %4654 = getelementptr inbounds nuw i8, ptr %4409, i64 768
  br label %4655

4655:                                             ; preds = %4644, %4655
  %4656 = phi i64 [ %4688, %4655 ], [ 0, %4644 ]
  %4657 = phi ptr [ %4687, %4655 ], [ %4645, %4644 ]
  %4658 = load <8 x double>, ptr %4548, align 64, !tbaa !26
  %4659 = extractelement <8 x double> %4658, i64 %4656
  %4660 = getelementptr inbounds nuw i8, ptr %4657, i64 8
  store double %4659, ptr %4657, align 8, !tbaa !40
  %4661 = load <8 x double>, ptr %4646, align 64, !tbaa !26
  %4662 = extractelement <8 x double> %4661, i64 %4656
  %4663 = getelementptr inbounds nuw i8, ptr %4657, i64 16
  store double %4662, ptr %4660, align 8, !tbaa !40
  %4664 = load <8 x double>, ptr %4647, align 64, !tbaa !26
  %4665 = extractelement <8 x double> %4664, i64 %4656
  %4666 = getelementptr inbounds nuw i8, ptr %4657, i64 24
  store double %4665, ptr %4663, align 8, !tbaa !40
  %4667 = load <8 x double>, ptr %4648, align 64, !tbaa !26
  %4668 = extractelement <8 x double> %4667, i64 %4656
  %4669 = getelementptr inbounds nuw i8, ptr %4657, i64 32
  store double %4668, ptr %4666, align 8, !tbaa !40
  %4670 = load <8 x double>, ptr %4649, align 64, !tbaa !26
  %4671 = extractelement <8 x double> %4670, i64 %4656
  %4672 = getelementptr inbounds nuw i8, ptr %4657, i64 40
  store double %4671, ptr %4669, align 8, !tbaa !40
  %4673 = load <8 x double>, ptr %4650, align 64, !tbaa !26
  %4674 = extractelement <8 x double> %4673, i64 %4656
  %4675 = getelementptr inbounds nuw i8, ptr %4657, i64 48
  store double %4674, ptr %4672, align 8, !tbaa !40
  %4676 = load <8 x double>, ptr %4651, align 64, !tbaa !26
  %4677 = extractelement <8 x double> %4676, i64 %4656
  %4678 = getelementptr inbounds nuw i8, ptr %4657, i64 56
  store double %4677, ptr %4675, align 8, !tbaa !40
  %4679 = load <8 x double>, ptr %4652, align 64, !tbaa !26
  %4680 = extractelement <8 x double> %4679, i64 %4656
  %4681 = getelementptr inbounds nuw i8, ptr %4657, i64 64
  store double %4680, ptr %4678, align 8, !tbaa !40
  %4682 = load <8 x double>, ptr %4653, align 64, !tbaa !26
  %4683 = extractelement <8 x double> %4682, i64 %4656
  %4684 = getelementptr inbounds nuw i8, ptr %4657, i64 72
  store double %4683, ptr %4681, align 8, !tbaa !40
  %4685 = load <8 x double>, ptr %4654, align 64, !tbaa !26
  %4686 = extractelement <8 x double> %4685, i64 %4656
  %4687 = getelementptr inbounds nuw i8, ptr %4657, i64 80
  store double %4686, ptr %4684, align 8, !tbaa !40
  %4688 = add nuw nsw i64 %4656, 1
  %4689 = icmp eq i64 %4688, %4581
  br i1 %4689, label %4690, label %4655, !llvm.loop !139

4690:                                             ; preds = %4655, %4629, %4625, %4547
  %4691 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %4692 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %4693 = fsub <8 x double> %4691, %4692
  %4694 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %4695 = fadd <8 x double> %4694, splat (double -1.000000e-09)
  %4696 = fcmp oge <8 x double> %4693, %4695
  %4697 = select <8 x i1> %4696, <8 x i64> %3596, <8 x i64> zeroinitializer
  %4698 = load i64, ptr %144, align 8, !tbaa !20
  %4699 = icmp sgt i64 %4698, 0
  br i1 %4699, label %4700, label %4732

4700:                                             ; preds = %4690
  %4701 = load ptr, ptr %129, align 8, !tbaa !28
  %4702 = and i64 %4698, 1
  %4703 = icmp eq i64 %4698, 1
  br i1 %4703, label %4722, label %4704

4704:                                             ; preds = %4700
  %4705 = and i64 %4698, 9223372036854775806
  br label %4706

4706:                                             ; preds = %4706, %4704
  %4707 = phi i64 [ 0, %4704 ], [ %4719, %4706 ]
  %4708 = phi <8 x double> [ splat (double 1.000000e+09), %4704 ], [ %4718, %4706 ]
  %4709 = phi i64 [ 0, %4704 ], [ %4720, %4706 ]
  %4710 = getelementptr inbounds nuw %struct.Piece, ptr %4701, i64 %4707, i32 35
  %4711 = load <8 x double>, ptr %4710, align 64, !tbaa !26
  %4712 = fcmp olt <8 x double> %4708, %4711
  %4713 = select <8 x i1> %4712, <8 x double> %4708, <8 x double> %4711
  %4714 = or disjoint i64 %4707, 1
  %4715 = getelementptr inbounds nuw %struct.Piece, ptr %4701, i64 %4714, i32 35
  %4716 = load <8 x double>, ptr %4715, align 64, !tbaa !26
  %4717 = fcmp olt <8 x double> %4713, %4716
  %4718 = select <8 x i1> %4717, <8 x double> %4713, <8 x double> %4716
  %4719 = add nuw nsw i64 %4707, 2
  %4720 = add i64 %4709, 2
  %4721 = icmp eq i64 %4720, %4705
  br i1 %4721, label %4722, label %4706, !llvm.loop !117

4722:                                             ; preds = %4706, %4700
  %4723 = phi <8 x double> [ poison, %4700 ], [ %4718, %4706 ]
  %4724 = phi i64 [ 0, %4700 ], [ %4719, %4706 ]
  %4725 = phi <8 x double> [ splat (double 1.000000e+09), %4700 ], [ %4718, %4706 ]
  %4726 = icmp eq i64 %4702, 0
  br i1 %4726, label %4732, label %4727

4727:                                             ; preds = %4722
  %4728 = getelementptr inbounds nuw %struct.Piece, ptr %4701, i64 %4724, i32 35
  %4729 = load <8 x double>, ptr %4728, align 64, !tbaa !26
  %4730 = fcmp olt <8 x double> %4725, %4729
  %4731 = select <8 x i1> %4730, <8 x double> %4725, <8 x double> %4729
  br label %4732

4732:                                             ; preds = %4727, %4722, %4690
  %4733 = phi <8 x double> [ splat (double 1.000000e+09), %4690 ], [ %4723, %4722 ], [ %4731, %4727 ]
  %4734 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4733)
  %4735 = insertelement <8 x double> poison, double %4734, i64 0
  %4736 = shufflevector <8 x double> %4735, <8 x double> poison, <8 x i32> zeroinitializer
  %4737 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4738 = select <8 x i1> %3656, <8 x double> %4737, <8 x double> %4736
  store <8 x double> %4738, ptr %209, align 64, !tbaa !26
  %4739 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %4740 = fcmp une <8 x double> %4739, zeroinitializer
  %4741 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4742 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4743 = fsub <8 x double> %4741, %4742
  %4744 = fcmp une <8 x double> %4739, splat (double 1.000000e+00)
  %4745 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %4746 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %4747 = fsub <8 x double> %4745, %4746
  %4748 = select <8 x i1> %4744, <8 x double> splat (double -1.000000e+00), <8 x double> %4747
  %4749 = fcmp une <8 x double> %4739, splat (double 2.000000e+00)
  %4750 = fsub <8 x double> %4738, %4746
  %4751 = select <8 x i1> %4749, <8 x double> %4748, <8 x double> %4750
  %4752 = fcmp une <8 x double> %4739, splat (double 3.000000e+00)
  %4753 = fsub <8 x double> %4743, %4746
  %4754 = select <8 x i1> %4752, <8 x double> %4751, <8 x double> %4753
  %4755 = fcmp une <8 x double> %4739, splat (double 4.000000e+00)
  %4756 = fsub <8 x double> %4746, %4743
  %4757 = select <8 x i1> %4755, <8 x double> %4754, <8 x double> %4756
  %4758 = fcmp oge <8 x double> %4757, splat (double 0xBEB0C6F7A0B5ED8D)
  %4759 = select <8 x i1> %4758, <8 x i1> %4740, <8 x i1> zeroinitializer
  %4760 = select <8 x i1> %4759, <8 x i64> %3596, <8 x i64> zeroinitializer
  %4761 = xor <8 x i64> %4760, splat (i64 -1)
  %4762 = and <8 x i64> %4697, %4761
  %4763 = load <8 x double>, ptr %126, align 64, !tbaa !26
  %4764 = icmp ne <8 x i64> %4762, zeroinitializer
  %4765 = select <8 x i1> %4740, <8 x i1> %4764, <8 x i1> zeroinitializer
  %4766 = select <8 x i1> %4765, <8 x double> splat (double 2.000000e+00), <8 x double> %4763
  store <8 x double> %4766, ptr %126, align 64, !tbaa !26
  %4767 = or <8 x i64> %4760, %4697
  %4768 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4769 = fadd <8 x double> %4768, splat (double 1.000000e+00)
  %4770 = icmp eq <8 x i64> %4767, zeroinitializer
  %4771 = select <8 x i1> %4770, <8 x double> %4768, <8 x double> %4769
  store <8 x double> %4771, ptr %214, align 64, !tbaa !26
  %4772 = xor <8 x i64> %4767, %3596
  %4773 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4774 = fcmp oeq <8 x double> %4773, zeroinitializer
  %4775 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4776 = fcmp oeq <8 x double> %4775, zeroinitializer
  %4777 = select <8 x i1> %4776, <8 x i1> %4774, <8 x i1> zeroinitializer
  %4778 = select <8 x i1> %4777, <8 x i64> %4772, <8 x i64> zeroinitializer
  %4779 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %4780 = fmul <8 x double> %4779, splat (double 5.000000e-01)
  %4781 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %4782 = fadd <8 x double> %4781, %4780
  %4783 = fadd <8 x double> %4782, splat (double -1.000000e-03)
  %4784 = fcmp ult <8 x double> %4745, %4783
  %4785 = fsub <8 x double> %4781, %4780
  %4786 = fadd <8 x double> %4785, splat (double 1.000000e-03)
  %4787 = fcmp ole <8 x double> %4745, %4786
  %4788 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %4789 = select <8 x i1> %4787, <8 x i64> splat (i64 -1), <8 x i64> %4788
  %4790 = select <8 x i1> %4784, <8 x i64> %4789, <8 x i64> zeroinitializer
  %4791 = xor <8 x i64> %4790, %4788
  %4792 = and <8 x i64> %4791, %4778
  %4793 = and <8 x i64> %4790, %4778
  %4794 = xor <8 x i64> %4778, splat (i64 -1)
  %4795 = and <8 x i64> %4788, %4794
  %4796 = or <8 x i64> %4793, %4795
  store <8 x i64> %4796, ptr %154, align 64, !tbaa !26
  %4797 = load <8 x i64>, ptr %147, align 64, !tbaa !26
  %4798 = or <8 x i64> %4792, %4797
  store <8 x i64> %4798, ptr %147, align 64, !tbaa !26
  %4799 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4767)
  %4800 = icmp eq i64 %4799, 0
  br i1 %4800, label %4835, label %4801

4801:                                             ; preds = %4732
  %4802 = extractelement <8 x i64> %4767, i64 0
  %4803 = icmp eq i64 %4802, 0
  br i1 %4803, label %4805, label %4804

4804:                                             ; preds = %4801
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %4805

4805:                                             ; preds = %4804, %4801
  %4806 = extractelement <8 x i64> %4767, i64 1
  %4807 = icmp eq i64 %4806, 0
  br i1 %4807, label %4809, label %4808

4808:                                             ; preds = %4805
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %4809

4809:                                             ; preds = %4808, %4805
  %4810 = extractelement <8 x i64> %4767, i64 2
  %4811 = icmp eq i64 %4810, 0
  br i1 %4811, label %4813, label %4812

4812:                                             ; preds = %4809
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %4813

4813:                                             ; preds = %4812, %4809
  %4814 = extractelement <8 x i64> %4767, i64 3
  %4815 = icmp eq i64 %4814, 0
  br i1 %4815, label %4817, label %4816

4816:                                             ; preds = %4813
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %4817

4817:                                             ; preds = %4816, %4813
  %4818 = extractelement <8 x i64> %4767, i64 4
  %4819 = icmp eq i64 %4818, 0
  br i1 %4819, label %4821, label %4820

4820:                                             ; preds = %4817
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %4821

4821:                                             ; preds = %4820, %4817
  %4822 = extractelement <8 x i64> %4767, i64 5
  %4823 = icmp eq i64 %4822, 0
  br i1 %4823, label %4825, label %4824

4824:                                             ; preds = %4821
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %4825

4825:                                             ; preds = %4824, %4821
  %4826 = extractelement <8 x i64> %4767, i64 6
  %4827 = icmp eq i64 %4826, 0
  br i1 %4827, label %4829, label %4828

4828:                                             ; preds = %4825
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %4829

4829:                                             ; preds = %4828, %4825
  %4830 = extractelement <8 x i64> %4767, i64 7
  %4831 = icmp eq i64 %4830, 0
  br i1 %4831, label %4833, label %4832

4832:                                             ; preds = %4829
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %4833

4833:                                             ; preds = %4832, %4829
  %4834 = load <8 x double>, ptr %126, align 64, !tbaa !26
  br label %4835

4835:                                             ; preds = %4833, %4732
  %4836 = phi <8 x double> [ %4834, %4833 ], [ %4766, %4732 ]
  %4837 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4838 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %4839 = fadd <8 x double> %4838, splat (double -1.000000e+00)
  %4840 = fcmp oge <8 x double> %4837, %4839
  %4841 = select <8 x i1> %4840, <8 x i64> %3596, <8 x i64> zeroinitializer
  %4842 = icmp eq <8 x i64> %4841, zeroinitializer
  %4843 = select <8 x i1> %4842, <8 x double> %4836, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %4843, ptr %126, align 64, !tbaa !26
  %4844 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4841)
  %4845 = icmp eq i64 %4844, 0
  br i1 %4845, label %512, label %4846

4846:                                             ; preds = %4835
  %4847 = extractelement <8 x i64> %4841, i64 0
  %4848 = icmp eq i64 %4847, 0
  br i1 %4848, label %4850, label %4849

4849:                                             ; preds = %4846
  store double 1.000000e+00, ptr %118, align 8, !tbaa !40
  br label %4850

4850:                                             ; preds = %4849, %4846
  %4851 = extractelement <8 x i64> %4841, i64 1
  %4852 = icmp eq i64 %4851, 0
  br i1 %4852, label %4854, label %4853

4853:                                             ; preds = %4850
  store double 1.000000e+00, ptr %266, align 8, !tbaa !40
  br label %4854

4854:                                             ; preds = %4853, %4850
  %4855 = extractelement <8 x i64> %4841, i64 2
  %4856 = icmp eq i64 %4855, 0
  br i1 %4856, label %4858, label %4857

4857:                                             ; preds = %4854
  store double 1.000000e+00, ptr %267, align 8, !tbaa !40
  br label %4858

4858:                                             ; preds = %4857, %4854
  %4859 = extractelement <8 x i64> %4841, i64 3
  %4860 = icmp eq i64 %4859, 0
  br i1 %4860, label %4862, label %4861

4861:                                             ; preds = %4858
  store double 1.000000e+00, ptr %268, align 8, !tbaa !40
  br label %4862

4862:                                             ; preds = %4861, %4858
  %4863 = extractelement <8 x i64> %4841, i64 4
  %4864 = icmp eq i64 %4863, 0
  br i1 %4864, label %4866, label %4865

4865:                                             ; preds = %4862
  store double 1.000000e+00, ptr %269, align 8, !tbaa !40
  br label %4866

4866:                                             ; preds = %4865, %4862
  %4867 = extractelement <8 x i64> %4841, i64 5
  %4868 = icmp eq i64 %4867, 0
  br i1 %4868, label %4870, label %4869

4869:                                             ; preds = %4866
  store double 1.000000e+00, ptr %270, align 8, !tbaa !40
  br label %4870

4870:                                             ; preds = %4869, %4866
  %4871 = extractelement <8 x i64> %4841, i64 6
  %4872 = icmp eq i64 %4871, 0
  br i1 %4872, label %4874, label %4873

4873:                                             ; preds = %4870
  store double 1.000000e+00, ptr %271, align 8, !tbaa !40
  br label %4874

4874:                                             ; preds = %4873, %4870
  %4875 = extractelement <8 x i64> %4841, i64 7
  %4876 = icmp eq i64 %4875, 0
  br i1 %4876, label %512, label %4877

4877:                                             ; preds = %4874
  store double 1.000000e+00, ptr %272, align 8, !tbaa !40
  br label %512

4878:                                             ; preds = %512, %517, %109
  %4879 = phi i64 [ 0, %109 ], [ 1, %517 ], [ 0, %512 ]
  ret i64 %4879
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2344
  %6 = zext nneg i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #6
  %8 = getelementptr inbounds nuw i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  %9 = add nuw nsw i64 %6, 1
  %10 = load i64, ptr %5, align 8, !tbaa !27
  %11 = trunc nuw nsw i64 %9 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %11, i64 noundef %10) #6
  %12 = getelementptr inbounds nuw i64, ptr %4, i64 %9
  store i64 -1, ptr %12, align 8, !tbaa !30
  %13 = add nuw nsw i64 %6, 2
  %14 = load i64, ptr %5, align 8, !tbaa !27
  %15 = trunc nuw nsw i64 %13 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %15, i64 noundef %14) #6
  %16 = getelementptr inbounds nuw i64, ptr %4, i64 %13
  store i64 -1, ptr %16, align 8, !tbaa !30
  %17 = add nuw nsw i64 %6, 3
  %18 = load i64, ptr %5, align 8, !tbaa !27
  %19 = trunc nuw nsw i64 %17 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %19, i64 noundef %18) #6
  %20 = getelementptr inbounds nuw i64, ptr %4, i64 %17
  store i64 -1, ptr %20, align 8, !tbaa !30
  %21 = add nuw nsw i64 %6, 4
  %22 = load i64, ptr %5, align 8, !tbaa !27
  %23 = trunc nuw nsw i64 %21 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %23, i64 noundef %22) #6
  %24 = getelementptr inbounds nuw i64, ptr %4, i64 %21
  store i64 -1, ptr %24, align 8, !tbaa !30
  %25 = add nuw nsw i64 %6, 5
  %26 = load i64, ptr %5, align 8, !tbaa !27
  %27 = trunc nuw nsw i64 %25 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %27, i64 noundef %26) #6
  %28 = getelementptr inbounds nuw i64, ptr %4, i64 %25
  store i64 -1, ptr %28, align 8, !tbaa !30
  %29 = add nuw nsw i64 %6, 6
  %30 = load i64, ptr %5, align 8, !tbaa !27
  %31 = trunc nuw nsw i64 %29 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %31, i64 noundef %30) #6
  %32 = getelementptr inbounds nuw i64, ptr %4, i64 %29
  store i64 -1, ptr %32, align 8, !tbaa !30
  %33 = add nuw nsw i64 %6, 7
  %34 = load i64, ptr %5, align 8, !tbaa !27
  %35 = trunc nuw nsw i64 %33 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %35, i64 noundef %34) #6
  %36 = getelementptr inbounds nuw i64, ptr %4, i64 %33
  store i64 -1, ptr %36, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  %37 = add nuw nsw i32 %2, 1
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %37) #6
  %38 = add nuw nsw i32 %2, 2
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %38) #6
  %39 = add nuw nsw i32 %2, 3
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %39) #6
  %40 = add nuw nsw i32 %2, 4
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %40) #6
  %41 = add nuw nsw i32 %2, 5
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %41) #6
  %42 = add nuw nsw i32 %2, 6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %42) #6
  %43 = add nuw nsw i32 %2, 7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %43) #6
  %44 = getelementptr inbounds nuw i8, ptr %0, i64 2344
  %45 = load i64, ptr %44, align 8, !tbaa !27
  %46 = add nsw i64 %45, 1
  store i64 %46, ptr %44, align 8, !tbaa !27
  %47 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %48 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %49 = load ptr, ptr %48, align 64, !tbaa !36
  %50 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %51 = load <8 x double>, ptr %50, align 64, !tbaa !26
  %52 = getelementptr inbounds nuw i8, ptr %49, i64 64
  store <8 x double> %51, ptr %49, align 64, !tbaa !26
  %53 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %54 = load <8 x double>, ptr %53, align 64, !tbaa !26
  %55 = getelementptr inbounds nuw i8, ptr %49, i64 128
  store <8 x double> %54, ptr %52, align 64, !tbaa !26
  %56 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %57 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %58 = load <8 x double>, ptr %57, align 64, !tbaa !26
  %59 = getelementptr inbounds nuw i8, ptr %49, i64 192
  store <8 x double> %58, ptr %55, align 64, !tbaa !26
  %60 = load <8 x double>, ptr %56, align 64, !tbaa !26
  %61 = getelementptr inbounds nuw i8, ptr %49, i64 256
  store <8 x double> %60, ptr %59, align 64, !tbaa !26
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %63 = load i64, ptr %62, align 8, !tbaa !20
  %64 = icmp sgt i64 %63, 0
  br i1 %64, label %65, label %67

65:                                               ; preds = %3
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  br label %72

67:                                               ; preds = %72, %3
  %68 = phi ptr [ %61, %3 ], [ %78, %72 ]
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %70 = load i64, ptr %69, align 8, !tbaa !132
  %71 = icmp eq i64 %70, 0
  br i1 %71, label %213, label %82

72:                                               ; preds = %65, %72
  %73 = phi ptr [ %61, %65 ], [ %78, %72 ]
  %74 = phi i64 [ 0, %65 ], [ %79, %72 ]
  %75 = load ptr, ptr %66, align 8, !tbaa !28
  %76 = getelementptr inbounds nuw %struct.Piece, ptr %75, i64 %74, i32 35
  %77 = load <8 x double>, ptr %76, align 64, !tbaa !26
  %78 = getelementptr inbounds nuw i8, ptr %73, i64 64
  store <8 x double> %77, ptr %73, align 64, !tbaa !26
  %79 = add nuw nsw i64 %74, 1
  %80 = load i64, ptr %62, align 8, !tbaa !20
  %81 = icmp slt i64 %79, %80
  br i1 %81, label %72, label %67, !llvm.loop !133

82:                                               ; preds = %67
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %84 = load <8 x double>, ptr %83, align 64, !tbaa !26
  %85 = getelementptr inbounds nuw i8, ptr %68, i64 64
  store <8 x double> %84, ptr %68, align 64, !tbaa !26
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %87 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %88 = getelementptr inbounds nuw i8, ptr %68, i64 128
  store <8 x double> %87, ptr %85, align 64, !tbaa !26
  %89 = load <8 x double>, ptr %57, align 64, !tbaa !26
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %91 = load <8 x double>, ptr %90, align 64, !tbaa !26
  %92 = fsub <8 x double> %89, %91
  %93 = fcmp ogt <8 x double> %92, zeroinitializer
  %94 = select <8 x i1> %93, <8 x double> %92, <8 x double> zeroinitializer
  store <8 x double> %94, ptr %88, align 64, !tbaa !26
  %95 = load i64, ptr %62, align 8, !tbaa !20
  %96 = icmp sgt i64 %95, 0
  br i1 %96, label %97, label %213

97:                                               ; preds = %82
  %98 = getelementptr inbounds nuw i8, ptr %68, i64 192
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 2328
  br label %102

102:                                              ; preds = %97, %102
  %103 = phi ptr [ %98, %97 ], [ %209, %102 ]
  %104 = phi i64 [ 0, %97 ], [ %210, %102 ]
  %105 = load ptr, ptr %99, align 8, !tbaa !28
  %106 = getelementptr inbounds nuw %struct.Piece, ptr %105, i64 %104
  %107 = getelementptr inbounds nuw i8, ptr %106, i64 7568
  %108 = load ptr, ptr %107, align 16, !tbaa !44
  %109 = load i64, ptr %100, align 16, !tbaa !21
  %110 = getelementptr <8 x double>, ptr %108, i64 %109
  %111 = getelementptr i8, ptr %110, i64 -64
  %112 = load <8 x double>, ptr %111, align 64, !tbaa !26
  %113 = getelementptr inbounds nuw i8, ptr %106, i64 6848
  %114 = load <8 x double>, ptr %113, align 64, !tbaa !26
  %115 = getelementptr inbounds nuw i8, ptr %106, i64 5568
  %116 = load <8 x double>, ptr %115, align 64, !tbaa !26
  %117 = fsub <8 x double> %116, %112
  %118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %114, <8 x double> %117, <8 x double> %112)
  %119 = getelementptr inbounds nuw i8, ptr %103, i64 64
  store <8 x double> %118, ptr %103, align 64, !tbaa !26
  %120 = getelementptr inbounds nuw i8, ptr %106, i64 6400
  %121 = load <8 x double>, ptr %120, align 64, !tbaa !26
  %122 = getelementptr inbounds nuw i8, ptr %103, i64 128
  store <8 x double> %121, ptr %119, align 64, !tbaa !26
  %123 = load <8 x double>, ptr %106, align 64, !tbaa !26
  %124 = getelementptr inbounds nuw i8, ptr %106, i64 3712
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fsub <8 x double> %123, %125
  %127 = getelementptr inbounds nuw i8, ptr %103, i64 192
  store <8 x double> %126, ptr %122, align 64, !tbaa !26
  %128 = getelementptr inbounds nuw i8, ptr %106, i64 4032
  %129 = load <8 x double>, ptr %128, align 64, !tbaa !26
  %130 = getelementptr inbounds nuw i8, ptr %103, i64 256
  store <8 x double> %129, ptr %127, align 64, !tbaa !26
  %131 = getelementptr inbounds nuw i8, ptr %106, i64 3968
  %132 = load <8 x double>, ptr %131, align 64, !tbaa !26
  %133 = getelementptr inbounds nuw i8, ptr %103, i64 320
  store <8 x double> %132, ptr %130, align 64, !tbaa !26
  %134 = getelementptr inbounds nuw i8, ptr %106, i64 3840
  %135 = load <8 x double>, ptr %134, align 64, !tbaa !26
  %136 = getelementptr inbounds nuw i8, ptr %103, i64 384
  store <8 x double> %135, ptr %133, align 64, !tbaa !26
  %137 = getelementptr inbounds nuw i8, ptr %106, i64 4096
  %138 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %139 = getelementptr inbounds nuw i8, ptr %103, i64 448
  store <8 x double> %138, ptr %136, align 64, !tbaa !26
  %140 = getelementptr inbounds nuw i8, ptr %106, i64 7688
  %141 = load i64, ptr %101, align 8, !tbaa !22
  %142 = sitofp i64 %141 to double
  %143 = tail call double @llvm.fmuladd.f64(double %142, double 7.500000e-01, double -5.000000e-01)
  %144 = fcmp ogt double %143, 0.000000e+00
  %145 = select i1 %144, double %143, double 0.000000e+00
  %146 = fptosi double %145 to i64
  %147 = add nsw i64 %141, -2
  %148 = tail call i64 @llvm.smin.i64(i64 %147, i64 %146)
  %149 = sitofp i64 %148 to double
  %150 = fsub double %143, %149
  %151 = fsub double 1.000000e+00, %150
  %152 = insertelement <8 x double> poison, double %151, i64 0
  %153 = shufflevector <8 x double> %152, <8 x double> poison, <8 x i32> zeroinitializer
  %154 = load ptr, ptr %140, align 8, !tbaa !48
  %155 = getelementptr inbounds <8 x double>, ptr %154, i64 %148
  %156 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %157 = insertelement <8 x double> poison, double %150, i64 0
  %158 = shufflevector <8 x double> %157, <8 x double> poison, <8 x i32> zeroinitializer
  %159 = getelementptr i8, ptr %155, i64 64
  %160 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %161 = fmul <8 x double> %160, %158
  %162 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %153, <8 x double> %156, <8 x double> %161)
  store <8 x double> %162, ptr %139, align 64, !tbaa !26
  %163 = load i64, ptr %101, align 8, !tbaa !22
  %164 = sitofp i64 %163 to double
  %165 = tail call double @llvm.fmuladd.f64(double %164, double 5.000000e-01, double -5.000000e-01)
  %166 = fcmp ogt double %165, 0.000000e+00
  %167 = select i1 %166, double %165, double 0.000000e+00
  %168 = fptosi double %167 to i64
  %169 = add nsw i64 %163, -2
  %170 = tail call i64 @llvm.smin.i64(i64 %169, i64 %168)
  %171 = sitofp i64 %170 to double
  %172 = fsub double %165, %171
  %173 = fsub double 1.000000e+00, %172
  %174 = insertelement <8 x double> poison, double %173, i64 0
  %175 = shufflevector <8 x double> %174, <8 x double> poison, <8 x i32> zeroinitializer
  %176 = load ptr, ptr %140, align 8, !tbaa !48
  %177 = getelementptr inbounds <8 x double>, ptr %176, i64 %170
  %178 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %179 = insertelement <8 x double> poison, double %172, i64 0
  %180 = shufflevector <8 x double> %179, <8 x double> poison, <8 x i32> zeroinitializer
  %181 = getelementptr i8, ptr %177, i64 64
  %182 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %183 = fmul <8 x double> %182, %180
  %184 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %175, <8 x double> %178, <8 x double> %183)
  %185 = getelementptr inbounds nuw i8, ptr %103, i64 512
  store <8 x double> %184, ptr %185, align 64, !tbaa !26
  %186 = load i64, ptr %101, align 8, !tbaa !22
  %187 = sitofp i64 %186 to double
  %188 = tail call double @llvm.fmuladd.f64(double %187, double 2.500000e-01, double -5.000000e-01)
  %189 = fcmp ogt double %188, 0.000000e+00
  %190 = select i1 %189, double %188, double 0.000000e+00
  %191 = fptosi double %190 to i64
  %192 = add nsw i64 %186, -2
  %193 = tail call i64 @llvm.smin.i64(i64 %192, i64 %191)
  %194 = sitofp i64 %193 to double
  %195 = fsub double %188, %194
  %196 = fsub double 1.000000e+00, %195
  %197 = insertelement <8 x double> poison, double %196, i64 0
  %198 = shufflevector <8 x double> %197, <8 x double> poison, <8 x i32> zeroinitializer
  %199 = load ptr, ptr %140, align 8, !tbaa !48
  %200 = getelementptr inbounds <8 x double>, ptr %199, i64 %193
  %201 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %202 = insertelement <8 x double> poison, double %195, i64 0
  %203 = shufflevector <8 x double> %202, <8 x double> poison, <8 x i32> zeroinitializer
  %204 = getelementptr i8, ptr %200, i64 64
  %205 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %206 = fmul <8 x double> %205, %203
  %207 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %198, <8 x double> %201, <8 x double> %206)
  %208 = getelementptr inbounds nuw i8, ptr %103, i64 576
  store <8 x double> %207, ptr %208, align 64, !tbaa !26
  %209 = getelementptr inbounds nuw i8, ptr %103, i64 640
  %210 = add nuw nsw i64 %104, 1
  %211 = load i64, ptr %62, align 8, !tbaa !20
  %212 = icmp slt i64 %210, %211
  br i1 %212, label %102, label %213, !llvm.loop !134

213:                                              ; preds = %102, %82, %67
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %215 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %217 = load ptr, ptr %216, align 8
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %222 = load ptr, ptr %48, align 64
  %223 = icmp ult ptr %222, %61
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %225 = getelementptr inbounds nuw i8, ptr %68, i64 192
  %226 = extractelement <8 x i64> %47, i64 0
  %227 = icmp eq i64 %226, 0
  br i1 %227, label %365, label %228

228:                                              ; preds = %213
  %229 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %230 = load i64, ptr %229, align 64, !tbaa !30
  %231 = load i64, ptr %214, align 8, !tbaa !135
  %232 = icmp eq i64 %230, %231
  br i1 %232, label %235, label %233

233:                                              ; preds = %228
  %234 = load ptr, ptr %221, align 64, !tbaa !136
  br label %247

235:                                              ; preds = %228
  %236 = load i64, ptr %215, align 64, !tbaa !30
  %237 = load i64, ptr %218, align 8, !tbaa !39
  %238 = getelementptr inbounds i64, ptr %217, i64 %237
  store i64 %236, ptr %238, align 8, !tbaa !30
  %239 = load ptr, ptr %219, align 8, !tbaa !138
  %240 = load i64, ptr %218, align 8, !tbaa !39
  %241 = add nsw i64 %240, 1
  store i64 %241, ptr %218, align 8, !tbaa !39
  %242 = load i64, ptr %214, align 8, !tbaa !135
  %243 = mul nsw i64 %242, %240
  %244 = load i64, ptr %220, align 8, !tbaa !14
  %245 = mul nsw i64 %243, %244
  %246 = getelementptr inbounds double, ptr %239, i64 %245
  store ptr %246, ptr %221, align 64, !tbaa !136
  br label %247

247:                                              ; preds = %233, %235
  %248 = phi i64 [ %230, %233 ], [ 0, %235 ]
  %249 = phi ptr [ %234, %233 ], [ %246, %235 ]
  %250 = add nsw i64 %248, 1
  store i64 %250, ptr %229, align 64, !tbaa !30
  %251 = load i64, ptr %220, align 8, !tbaa !14
  %252 = mul nsw i64 %251, %248
  %253 = getelementptr inbounds double, ptr %249, i64 %252
  br i1 %223, label %312, label %254

254:                                              ; preds = %312, %247
  %255 = phi ptr [ %253, %247 ], [ %316, %312 ]
  %256 = load i64, ptr %224, align 64, !tbaa !16
  %257 = icmp sgt i64 %256, 0
  br i1 %257, label %258, label %300

258:                                              ; preds = %254
  %259 = and i64 %256, 3
  %260 = icmp ult i64 %256, 4
  br i1 %260, label %285, label %261

261:                                              ; preds = %258
  %262 = and i64 %256, 9223372036854775804
  br label %263

263:                                              ; preds = %263, %261
  %264 = phi i64 [ 0, %261 ], [ %282, %263 ]
  %265 = phi ptr [ %255, %261 ], [ %279, %263 ]
  %266 = phi i64 [ 0, %261 ], [ %283, %263 ]
  %267 = getelementptr i8, ptr %265, i64 8
  %268 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %269 = extractelement <8 x double> %268, i64 %264
  store double %269, ptr %265, align 8, !tbaa !40
  %270 = or disjoint i64 %264, 1
  %271 = getelementptr i8, ptr %265, i64 16
  %272 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %273 = extractelement <8 x double> %272, i64 %270
  store double %273, ptr %267, align 8, !tbaa !40
  %274 = or disjoint i64 %264, 2
  %275 = getelementptr i8, ptr %265, i64 24
  %276 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %277 = extractelement <8 x double> %276, i64 %274
  store double %277, ptr %271, align 8, !tbaa !40
  %278 = or disjoint i64 %264, 3
  %279 = getelementptr i8, ptr %265, i64 32
  %280 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %281 = extractelement <8 x double> %280, i64 %278
  store double %281, ptr %275, align 8, !tbaa !40
  %282 = add nuw nsw i64 %264, 4
  %283 = add i64 %266, 4
  %284 = icmp eq i64 %283, %262
  br i1 %284, label %285, label %263, !llvm.loop !139

285:                                              ; preds = %263, %258
  %286 = phi ptr [ poison, %258 ], [ %279, %263 ]
  %287 = phi i64 [ 0, %258 ], [ %282, %263 ]
  %288 = phi ptr [ %255, %258 ], [ %279, %263 ]
  %289 = icmp eq i64 %259, 0
  br i1 %289, label %300, label %290

290:                                              ; preds = %285, %290
  %291 = phi i64 [ %297, %290 ], [ %287, %285 ]
  %292 = phi ptr [ %294, %290 ], [ %288, %285 ]
  %293 = phi i64 [ %298, %290 ], [ 0, %285 ]
  %294 = getelementptr i8, ptr %292, i64 8
  %295 = load <8 x double>, ptr %61, align 64, !tbaa !26
  %296 = extractelement <8 x double> %295, i64 %291
  store double %296, ptr %292, align 8, !tbaa !40
  %297 = add nuw nsw i64 %291, 1
  %298 = add i64 %293, 1
  %299 = icmp eq i64 %298, %259
  br i1 %299, label %300, label %290, !llvm.loop !143

300:                                              ; preds = %285, %290, %254
  %301 = phi ptr [ %255, %254 ], [ %286, %285 ], [ %294, %290 ]
  %302 = load i64, ptr %69, align 8, !tbaa !132
  %303 = icmp eq i64 %302, 0
  br i1 %303, label %365, label %304

304:                                              ; preds = %300
  %305 = load double, ptr %68, align 8, !tbaa !40
  %306 = getelementptr inbounds nuw i8, ptr %301, i64 8
  store double %305, ptr %301, align 8, !tbaa !40
  %307 = getelementptr inbounds nuw i8, ptr %68, i64 64
  %308 = load double, ptr %307, align 8, !tbaa !40
  %309 = getelementptr inbounds nuw i8, ptr %301, i64 16
  store double %308, ptr %306, align 8, !tbaa !40
  %310 = getelementptr inbounds nuw i8, ptr %68, i64 128
  %311 = load double, ptr %310, align 8, !tbaa !40
  store double %311, ptr %309, align 8, !tbaa !40
  br i1 %257, label %319, label %365

312:                                              ; preds = %247, %312
  %313 = phi ptr [ %317, %312 ], [ %222, %247 ]
  %314 = phi ptr [ %316, %312 ], [ %253, %247 ]
  %315 = load double, ptr %313, align 8, !tbaa !40
  %316 = getelementptr inbounds nuw i8, ptr %314, i64 8
  store double %315, ptr %314, align 8, !tbaa !40
  %317 = getelementptr inbounds nuw i8, ptr %313, i64 64
  %318 = icmp ult ptr %317, %61
  br i1 %318, label %312, label %254, !llvm.loop !142

319:                                              ; preds = %304
  %320 = getelementptr inbounds nuw i8, ptr %301, i64 24
  %321 = getelementptr inbounds nuw i8, ptr %68, i64 256
  %322 = getelementptr inbounds nuw i8, ptr %68, i64 320
  %323 = getelementptr inbounds nuw i8, ptr %68, i64 384
  %324 = getelementptr inbounds nuw i8, ptr %68, i64 448
  %325 = getelementptr inbounds nuw i8, ptr %68, i64 512
  %326 = getelementptr inbounds nuw i8, ptr %68, i64 576
  %327 = getelementptr inbounds nuw i8, ptr %68, i64 640
  %328 = getelementptr inbounds nuw i8, ptr %68, i64 704
  %329 = getelementptr inbounds nuw i8, ptr %68, i64 768
  br label %330

330:                                              ; preds = %319, %330
  %331 = phi i64 [ %363, %330 ], [ 0, %319 ]
  %332 = phi ptr [ %362, %330 ], [ %320, %319 ]
  %333 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %334 = extractelement <8 x double> %333, i64 %331
  %335 = getelementptr inbounds nuw i8, ptr %332, i64 8
  store double %334, ptr %332, align 8, !tbaa !40
  %336 = load <8 x double>, ptr %321, align 64, !tbaa !26
  %337 = extractelement <8 x double> %336, i64 %331
  %338 = getelementptr inbounds nuw i8, ptr %332, i64 16
  store double %337, ptr %335, align 8, !tbaa !40
  %339 = load <8 x double>, ptr %322, align 64, !tbaa !26
  %340 = extractelement <8 x double> %339, i64 %331
  %341 = getelementptr inbounds nuw i8, ptr %332, i64 24
  store double %340, ptr %338, align 8, !tbaa !40
  %342 = load <8 x double>, ptr %323, align 64, !tbaa !26
  %343 = extractelement <8 x double> %342, i64 %331
  %344 = getelementptr inbounds nuw i8, ptr %332, i64 32
  store double %343, ptr %341, align 8, !tbaa !40
  %345 = load <8 x double>, ptr %324, align 64, !tbaa !26
  %346 = extractelement <8 x double> %345, i64 %331
  %347 = getelementptr inbounds nuw i8, ptr %332, i64 40
  store double %346, ptr %344, align 8, !tbaa !40
  %348 = load <8 x double>, ptr %325, align 64, !tbaa !26
  %349 = extractelement <8 x double> %348, i64 %331
  %350 = getelementptr inbounds nuw i8, ptr %332, i64 48
  store double %349, ptr %347, align 8, !tbaa !40
  %351 = load <8 x double>, ptr %326, align 64, !tbaa !26
  %352 = extractelement <8 x double> %351, i64 %331
  %353 = getelementptr inbounds nuw i8, ptr %332, i64 56
  store double %352, ptr %350, align 8, !tbaa !40
  %354 = load <8 x double>, ptr %327, align 64, !tbaa !26
  %355 = extractelement <8 x double> %354, i64 %331
  %356 = getelementptr inbounds nuw i8, ptr %332, i64 64
  store double %355, ptr %353, align 8, !tbaa !40
  %357 = load <8 x double>, ptr %328, align 64, !tbaa !26
  %358 = extractelement <8 x double> %357, i64 %331
  %359 = getelementptr inbounds nuw i8, ptr %332, i64 72
  store double %358, ptr %356, align 8, !tbaa !40
  %360 = load <8 x double>, ptr %329, align 64, !tbaa !26
  %361 = extractelement <8 x double> %360, i64 %331
  %362 = getelementptr inbounds nuw i8, ptr %332, i64 80
  store double %361, ptr %359, align 8, !tbaa !40
  %363 = add nuw nsw i64 %331, 1
  %364 = icmp eq i64 %363, %256
  br i1 %364, label %365, label %330, !llvm.loop !139

365:                                              ; preds = %330, %304, %300, %213
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #7
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !135
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %11 = getelementptr inbounds [8 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %13 = shl nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = sext i32 %14 to i64
  %16 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = sext i32 %13 to i64
  %18 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %20 = getelementptr inbounds [8 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !40
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !144
  %23 = mul i64 %3, 288
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr double, ptr %0, i64 %6
  br label %42

26:                                               ; preds = %42
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %28 = load i64, ptr %27, align 8, !tbaa !20
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %61

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2328
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = load ptr, ptr %36, align 8, !tbaa !145
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !146
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !147
  br label %154

42:                                               ; preds = %42, %4
  %43 = phi i64 [ 0, %4 ], [ %59, %42 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !40
  %46 = getelementptr <8 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !40
  %47 = or disjoint i64 %43, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !40
  %50 = getelementptr <8 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !40
  %51 = or disjoint i64 %43, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !40
  %54 = getelementptr <8 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !40
  %55 = or disjoint i64 %43, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !40
  %58 = getelementptr <8 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !40
  %59 = add nuw nsw i64 %43, 4
  %60 = icmp eq i64 %59, 36
  br i1 %60, label %26, label %42, !llvm.loop !148

61:                                               ; preds = %539, %26
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 2432
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 3200
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %66 = getelementptr inbounds double, ptr %65, i64 %6
  %67 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %68 = getelementptr inbounds double, ptr %67, i64 %6
  %69 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %70 = getelementptr inbounds double, ptr %69, i64 %6
  %71 = getelementptr double, ptr %62, i64 %6
  %72 = getelementptr i8, ptr %71, i64 256
  store double 0.000000e+00, ptr %72, align 8, !tbaa !40
  %73 = getelementptr i8, ptr %71, i64 320
  store double 0.000000e+00, ptr %73, align 8, !tbaa !40
  %74 = load double, ptr %66, align 8, !tbaa !40
  store double %74, ptr %71, align 8, !tbaa !40
  %75 = load double, ptr %68, align 8, !tbaa !40
  %76 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %77 = getelementptr inbounds double, ptr %76, i64 %6
  store double %75, ptr %77, align 8, !tbaa !40
  %78 = load double, ptr %70, align 8, !tbaa !40
  %79 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %80 = getelementptr inbounds double, ptr %79, i64 %6
  store double %78, ptr %80, align 8, !tbaa !40
  %81 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %82 = getelementptr inbounds double, ptr %81, i64 %6
  store double %78, ptr %82, align 8, !tbaa !40
  %83 = getelementptr double, ptr %63, i64 %6
  %84 = getelementptr i8, ptr %83, i64 256
  store double 0.000000e+00, ptr %84, align 8, !tbaa !40
  %85 = getelementptr i8, ptr %83, i64 320
  store double 0.000000e+00, ptr %85, align 8, !tbaa !40
  store double %74, ptr %83, align 8, !tbaa !40
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %87 = getelementptr inbounds double, ptr %86, i64 %6
  store double %75, ptr %87, align 8, !tbaa !40
  %88 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %89 = getelementptr inbounds double, ptr %88, i64 %6
  store double %78, ptr %89, align 8, !tbaa !40
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %91 = getelementptr inbounds double, ptr %90, i64 %6
  store double %78, ptr %91, align 8, !tbaa !40
  %92 = getelementptr double, ptr %64, i64 %6
  %93 = getelementptr i8, ptr %92, i64 256
  store double 0.000000e+00, ptr %93, align 8, !tbaa !40
  %94 = getelementptr i8, ptr %92, i64 320
  store double 0.000000e+00, ptr %94, align 8, !tbaa !40
  store double %74, ptr %92, align 8, !tbaa !40
  %95 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %96 = getelementptr inbounds double, ptr %95, i64 %6
  store double %75, ptr %96, align 8, !tbaa !40
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %98 = getelementptr inbounds double, ptr %97, i64 %6
  store double %78, ptr %98, align 8, !tbaa !40
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %100 = getelementptr inbounds double, ptr %99, i64 %6
  store double %78, ptr %100, align 8, !tbaa !40
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %102 = getelementptr inbounds double, ptr %101, i64 %6
  %103 = load double, ptr %102, align 8, !tbaa !40
  %104 = getelementptr inbounds nuw i8, ptr %0, i64 3904
  %105 = getelementptr inbounds double, ptr %104, i64 %6
  store double %103, ptr %105, align 8, !tbaa !40
  %106 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %107 = getelementptr inbounds double, ptr %106, i64 %6
  store double %103, ptr %107, align 8, !tbaa !40
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %109 = getelementptr inbounds double, ptr %108, i64 %6
  store double 1.000000e+09, ptr %109, align 8, !tbaa !40
  %110 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %111 = getelementptr inbounds double, ptr %110, i64 %6
  store double 0.000000e+00, ptr %111, align 8, !tbaa !40
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %113 = getelementptr inbounds double, ptr %112, i64 %6
  %114 = load double, ptr %113, align 8, !tbaa !40
  %115 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %116 = getelementptr inbounds double, ptr %115, i64 %6
  store double %114, ptr %116, align 8, !tbaa !40
  %117 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %118 = getelementptr inbounds double, ptr %117, i64 %6
  store double %114, ptr %118, align 8, !tbaa !40
  %119 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %120 = getelementptr inbounds double, ptr %119, i64 %6
  %121 = load double, ptr %120, align 8, !tbaa !40
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %123 = getelementptr inbounds double, ptr %122, i64 %6
  store double %121, ptr %123, align 8, !tbaa !40
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 4416
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 4480
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 4864
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 4928
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 5184
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 5248
  %135 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %135, align 8, !tbaa !40
  %136 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !40
  %137 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !40
  %138 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !40
  %139 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !40
  %140 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !40
  %141 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !40
  %142 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !40
  %143 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !40
  %144 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !40
  %145 = getelementptr inbounds double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !40
  %146 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %147 = getelementptr inbounds i64, ptr %146, i64 %6
  store i64 0, ptr %147, align 8, !tbaa !30
  %148 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %149 = getelementptr inbounds i64, ptr %148, i64 %6
  store i64 -1, ptr %149, align 8, !tbaa !30
  %150 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %151 = getelementptr inbounds i64, ptr %150, i64 %6
  store i64 -1, ptr %151, align 8, !tbaa !30
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %153 = getelementptr inbounds i64, ptr %152, i64 %6
  store i64 -1, ptr %153, align 8, !tbaa !30
  ret void

154:                                              ; preds = %30, %539
  %155 = phi i64 [ 0, %30 ], [ %540, %539 ]
  %156 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %155
  %157 = load i64, ptr %33, align 64, !tbaa !16
  %158 = icmp sgt i64 %157, %6
  %159 = load i64, ptr %34, align 16, !tbaa !21
  %160 = load i64, ptr %35, align 8, !tbaa !22
  %161 = mul nsw i64 %157, %3
  %162 = select i1 %158, i64 %6, i64 0
  %163 = add nsw i64 %162, %161
  %164 = getelementptr inbounds nuw i8, ptr %156, i64 7552
  %165 = load i64, ptr %164, align 64, !tbaa !31
  %166 = mul i64 %163, 368
  %167 = getelementptr i8, ptr %37, i64 %166
  %168 = getelementptr double, ptr %156, i64 %6
  br label %171

169:                                              ; preds = %171
  %170 = icmp eq i64 %165, 0
  br i1 %158, label %185, label %182

171:                                              ; preds = %171, %154
  %172 = phi i64 [ 0, %154 ], [ %180, %171 ]
  %173 = getelementptr double, ptr %167, i64 %172
  %174 = load double, ptr %173, align 8, !tbaa !40
  %175 = getelementptr <8 x double>, ptr %168, i64 %172
  store double %174, ptr %175, align 8, !tbaa !40
  %176 = or disjoint i64 %172, 1
  %177 = getelementptr double, ptr %167, i64 %176
  %178 = load double, ptr %177, align 8, !tbaa !40
  %179 = getelementptr <8 x double>, ptr %168, i64 %176
  store double %178, ptr %179, align 8, !tbaa !40
  %180 = add nuw nsw i64 %172, 2
  %181 = icmp eq i64 %180, 46
  br i1 %181, label %169, label %171, !llvm.loop !149

182:                                              ; preds = %169
  %183 = getelementptr inbounds nuw i8, ptr %156, i64 128
  %184 = getelementptr inbounds double, ptr %183, i64 %6
  store double 0.000000e+00, ptr %184, align 8, !tbaa !40
  br label %185

185:                                              ; preds = %182, %169
  %186 = getelementptr inbounds i64, ptr %41, i64 %163
  %187 = load i64, ptr %186, align 8, !tbaa !30
  %188 = mul nsw i64 %159, 3
  %189 = add nsw i64 %159, 1
  %190 = select i1 %170, i64 0, i64 2
  %191 = shl i64 %189, %190
  %192 = add nsw i64 %191, %188
  %193 = mul nsw i64 %187, %192
  %194 = getelementptr inbounds double, ptr %39, i64 %193
  %195 = icmp sgt i64 %159, 0
  br i1 %195, label %196, label %226

196:                                              ; preds = %185
  %197 = getelementptr inbounds nuw i8, ptr %156, i64 7648
  %198 = load ptr, ptr %197, align 32, !tbaa !70
  %199 = getelementptr double, ptr %198, i64 %6
  %200 = getelementptr double, ptr %194, i64 %159
  %201 = getelementptr inbounds nuw i8, ptr %156, i64 7656
  %202 = load ptr, ptr %201, align 8, !tbaa !46
  %203 = getelementptr double, ptr %202, i64 %6
  %204 = shl i64 %159, 4
  %205 = getelementptr i8, ptr %194, i64 %204
  %206 = getelementptr inbounds nuw i8, ptr %156, i64 7664
  %207 = load ptr, ptr %206, align 16, !tbaa !119
  %208 = getelementptr double, ptr %207, i64 %6
  %209 = and i64 %159, 1
  %210 = icmp eq i64 %159, 1
  br i1 %210, label %213, label %211

211:                                              ; preds = %196
  %212 = and i64 %159, 9223372036854775806
  br label %241

213:                                              ; preds = %241, %196
  %214 = phi i64 [ 0, %196 ], [ %263, %241 ]
  %215 = icmp eq i64 %209, 0
  br i1 %215, label %226, label %216

216:                                              ; preds = %213
  %217 = getelementptr inbounds nuw double, ptr %194, i64 %214
  %218 = load double, ptr %217, align 8, !tbaa !40
  %219 = getelementptr <8 x double>, ptr %199, i64 %214
  store double %218, ptr %219, align 8, !tbaa !40
  %220 = getelementptr double, ptr %200, i64 %214
  %221 = load double, ptr %220, align 8, !tbaa !40
  %222 = getelementptr <8 x double>, ptr %203, i64 %214
  store double %221, ptr %222, align 8, !tbaa !40
  %223 = getelementptr double, ptr %205, i64 %214
  %224 = load double, ptr %223, align 8, !tbaa !40
  %225 = getelementptr <8 x double>, ptr %208, i64 %214
  store double %224, ptr %225, align 8, !tbaa !40
  br label %226

226:                                              ; preds = %216, %213, %185
  %227 = getelementptr inbounds nuw i8, ptr %156, i64 960
  %228 = getelementptr inbounds double, ptr %227, i64 %6
  %229 = load double, ptr %228, align 8, !tbaa !40
  %230 = load double, ptr %168, align 8, !tbaa !40
  %231 = icmp sgt i64 %191, 0
  br i1 %231, label %232, label %278

232:                                              ; preds = %226
  %233 = getelementptr double, ptr %194, i64 %188
  %234 = getelementptr inbounds nuw i8, ptr %156, i64 7672
  %235 = load ptr, ptr %234, align 8, !tbaa !35
  %236 = getelementptr double, ptr %235, i64 %6
  %237 = and i64 %191, 3
  %238 = icmp ult i64 %191, 4
  br i1 %238, label %266, label %239

239:                                              ; preds = %232
  %240 = and i64 %191, 9223372036854775804
  br label %287

241:                                              ; preds = %241, %211
  %242 = phi i64 [ 0, %211 ], [ %263, %241 ]
  %243 = phi i64 [ 0, %211 ], [ %264, %241 ]
  %244 = getelementptr inbounds nuw double, ptr %194, i64 %242
  %245 = load double, ptr %244, align 8, !tbaa !40
  %246 = getelementptr <8 x double>, ptr %199, i64 %242
  store double %245, ptr %246, align 8, !tbaa !40
  %247 = getelementptr double, ptr %200, i64 %242
  %248 = load double, ptr %247, align 8, !tbaa !40
  %249 = getelementptr <8 x double>, ptr %203, i64 %242
  store double %248, ptr %249, align 8, !tbaa !40
  %250 = getelementptr double, ptr %205, i64 %242
  %251 = load double, ptr %250, align 8, !tbaa !40
  %252 = getelementptr <8 x double>, ptr %208, i64 %242
  store double %251, ptr %252, align 8, !tbaa !40
  %253 = or disjoint i64 %242, 1
  %254 = getelementptr inbounds nuw double, ptr %194, i64 %253
  %255 = load double, ptr %254, align 8, !tbaa !40
  %256 = getelementptr <8 x double>, ptr %199, i64 %253
  store double %255, ptr %256, align 8, !tbaa !40
  %257 = getelementptr double, ptr %200, i64 %253
  %258 = load double, ptr %257, align 8, !tbaa !40
  %259 = getelementptr <8 x double>, ptr %203, i64 %253
  store double %258, ptr %259, align 8, !tbaa !40
  %260 = getelementptr double, ptr %205, i64 %253
  %261 = load double, ptr %260, align 8, !tbaa !40
  %262 = getelementptr <8 x double>, ptr %208, i64 %253
  store double %261, ptr %262, align 8, !tbaa !40
  %263 = add nuw nsw i64 %242, 2
  %264 = add i64 %243, 2
  %265 = icmp eq i64 %264, %212
  br i1 %265, label %213, label %241, !llvm.loop !150

266:                                              ; preds = %287, %232
  %267 = phi i64 [ 0, %232 ], [ %305, %287 ]
  %268 = icmp eq i64 %237, 0
  br i1 %268, label %278, label %269

269:                                              ; preds = %266, %269
  %270 = phi i64 [ %275, %269 ], [ %267, %266 ]
  %271 = phi i64 [ %276, %269 ], [ 0, %266 ]
  %272 = getelementptr double, ptr %233, i64 %270
  %273 = load double, ptr %272, align 8, !tbaa !40
  %274 = getelementptr <8 x double>, ptr %236, i64 %270
  store double %273, ptr %274, align 8, !tbaa !40
  %275 = add nuw nsw i64 %270, 1
  %276 = add i64 %271, 1
  %277 = icmp eq i64 %276, %237
  br i1 %277, label %278, label %269, !llvm.loop !151

278:                                              ; preds = %266, %269, %226
  %279 = icmp ne i64 %165, 0
  %280 = icmp sgt i64 %159, -1
  %281 = select i1 %279, i1 %280, i1 false
  br i1 %281, label %282, label %308

282:                                              ; preds = %278
  %283 = fdiv double 1.000000e+00, %230
  %284 = getelementptr inbounds nuw i8, ptr %156, i64 7672
  %285 = load ptr, ptr %284, align 8, !tbaa !35
  %286 = getelementptr double, ptr %285, i64 %6
  br label %427

287:                                              ; preds = %287, %239
  %288 = phi i64 [ 0, %239 ], [ %305, %287 ]
  %289 = phi i64 [ 0, %239 ], [ %306, %287 ]
  %290 = getelementptr double, ptr %233, i64 %288
  %291 = load double, ptr %290, align 8, !tbaa !40
  %292 = getelementptr <8 x double>, ptr %236, i64 %288
  store double %291, ptr %292, align 8, !tbaa !40
  %293 = or disjoint i64 %288, 1
  %294 = getelementptr double, ptr %233, i64 %293
  %295 = load double, ptr %294, align 8, !tbaa !40
  %296 = getelementptr <8 x double>, ptr %236, i64 %293
  store double %295, ptr %296, align 8, !tbaa !40
  %297 = or disjoint i64 %288, 2
  %298 = getelementptr double, ptr %233, i64 %297
  %299 = load double, ptr %298, align 8, !tbaa !40
  %300 = getelementptr <8 x double>, ptr %236, i64 %297
  store double %299, ptr %300, align 8, !tbaa !40
  %301 = or disjoint i64 %288, 3
  %302 = getelementptr double, ptr %233, i64 %301
  %303 = load double, ptr %302, align 8, !tbaa !40
  %304 = getelementptr <8 x double>, ptr %236, i64 %301
  store double %303, ptr %304, align 8, !tbaa !40
  %305 = add nuw nsw i64 %288, 4
  %306 = add i64 %289, 4
  %307 = icmp eq i64 %306, %240
  br i1 %307, label %266, label %287, !llvm.loop !152

308:                                              ; preds = %427, %278
  %309 = getelementptr inbounds nuw i8, ptr %156, i64 2560
  %310 = getelementptr inbounds double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !40
  %312 = getelementptr inbounds nuw i8, ptr %156, i64 2624
  %313 = getelementptr inbounds double, ptr %312, i64 %6
  %314 = load double, ptr %313, align 8, !tbaa !40
  %315 = getelementptr inbounds nuw i8, ptr %156, i64 2688
  %316 = getelementptr inbounds double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !40
  %318 = getelementptr inbounds nuw i8, ptr %156, i64 2752
  %319 = getelementptr inbounds double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !40
  %321 = tail call double @llvm.fmuladd.f64(double %230, double %320, double %317)
  %322 = tail call double @llvm.fmuladd.f64(double %230, double %321, double %314)
  %323 = tail call double @llvm.fmuladd.f64(double %230, double %322, double %311)
  %324 = getelementptr inbounds nuw i8, ptr %156, i64 832
  %325 = getelementptr inbounds double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !40
  %327 = getelementptr inbounds nuw i8, ptr %156, i64 1408
  %328 = getelementptr inbounds double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !40
  %330 = getelementptr inbounds nuw i8, ptr %156, i64 1536
  %331 = getelementptr inbounds double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !40
  %333 = fsub double %329, %332
  %334 = fmul double %326, %333
  %335 = getelementptr inbounds nuw i8, ptr %156, i64 2944
  %336 = getelementptr inbounds nuw i8, ptr %156, i64 3712
  %337 = getelementptr inbounds nuw i8, ptr %156, i64 4480
  %338 = getelementptr inbounds nuw i8, ptr %156, i64 896
  %339 = getelementptr inbounds double, ptr %338, i64 %6
  %340 = getelementptr inbounds nuw i8, ptr %156, i64 1024
  %341 = getelementptr inbounds double, ptr %340, i64 %6
  %342 = getelementptr double, ptr %335, i64 %6
  %343 = getelementptr i8, ptr %342, i64 320
  store double 0.000000e+00, ptr %343, align 8, !tbaa !40
  %344 = getelementptr i8, ptr %342, i64 384
  store double 0.000000e+00, ptr %344, align 8, !tbaa !40
  %345 = getelementptr i8, ptr %342, i64 448
  store double 0.000000e+00, ptr %345, align 8, !tbaa !40
  %346 = getelementptr i8, ptr %342, i64 512
  store double 0.000000e+00, ptr %346, align 8, !tbaa !40
  %347 = getelementptr i8, ptr %342, i64 640
  store double 0.000000e+00, ptr %347, align 8, !tbaa !40
  store double %230, ptr %342, align 8, !tbaa !40
  %348 = getelementptr inbounds nuw i8, ptr %156, i64 3008
  %349 = getelementptr inbounds double, ptr %348, i64 %6
  store double %329, ptr %349, align 8, !tbaa !40
  %350 = load double, ptr %339, align 8, !tbaa !40
  %351 = getelementptr inbounds nuw i8, ptr %156, i64 3072
  %352 = getelementptr inbounds double, ptr %351, i64 %6
  store double %350, ptr %352, align 8, !tbaa !40
  %353 = getelementptr inbounds nuw i8, ptr %156, i64 3136
  %354 = getelementptr inbounds double, ptr %353, i64 %6
  store double %334, ptr %354, align 8, !tbaa !40
  %355 = getelementptr inbounds nuw i8, ptr %156, i64 3520
  %356 = getelementptr inbounds double, ptr %355, i64 %6
  store double %229, ptr %356, align 8, !tbaa !40
  %357 = load double, ptr %341, align 8, !tbaa !40
  %358 = getelementptr inbounds nuw i8, ptr %156, i64 3200
  %359 = getelementptr inbounds double, ptr %358, i64 %6
  store double %357, ptr %359, align 8, !tbaa !40
  %360 = getelementptr inbounds nuw i8, ptr %156, i64 3648
  %361 = getelementptr inbounds double, ptr %360, i64 %6
  store double %323, ptr %361, align 8, !tbaa !40
  %362 = getelementptr double, ptr %336, i64 %6
  %363 = getelementptr i8, ptr %362, i64 320
  store double 0.000000e+00, ptr %363, align 8, !tbaa !40
  %364 = getelementptr i8, ptr %362, i64 384
  store double 0.000000e+00, ptr %364, align 8, !tbaa !40
  %365 = getelementptr i8, ptr %362, i64 448
  store double 0.000000e+00, ptr %365, align 8, !tbaa !40
  %366 = getelementptr i8, ptr %362, i64 512
  store double 0.000000e+00, ptr %366, align 8, !tbaa !40
  %367 = getelementptr i8, ptr %362, i64 640
  store double 0.000000e+00, ptr %367, align 8, !tbaa !40
  store double %230, ptr %362, align 8, !tbaa !40
  %368 = getelementptr inbounds nuw i8, ptr %156, i64 3776
  %369 = getelementptr inbounds double, ptr %368, i64 %6
  store double %329, ptr %369, align 8, !tbaa !40
  %370 = getelementptr inbounds nuw i8, ptr %156, i64 3840
  %371 = getelementptr inbounds double, ptr %370, i64 %6
  store double %350, ptr %371, align 8, !tbaa !40
  %372 = getelementptr inbounds nuw i8, ptr %156, i64 3904
  %373 = getelementptr inbounds double, ptr %372, i64 %6
  store double %334, ptr %373, align 8, !tbaa !40
  %374 = getelementptr inbounds nuw i8, ptr %156, i64 4288
  %375 = getelementptr inbounds double, ptr %374, i64 %6
  store double %229, ptr %375, align 8, !tbaa !40
  %376 = getelementptr inbounds nuw i8, ptr %156, i64 3968
  %377 = getelementptr inbounds double, ptr %376, i64 %6
  store double %357, ptr %377, align 8, !tbaa !40
  %378 = getelementptr inbounds nuw i8, ptr %156, i64 4416
  %379 = getelementptr inbounds double, ptr %378, i64 %6
  store double %323, ptr %379, align 8, !tbaa !40
  %380 = getelementptr double, ptr %337, i64 %6
  %381 = getelementptr i8, ptr %380, i64 320
  store double 0.000000e+00, ptr %381, align 8, !tbaa !40
  %382 = getelementptr i8, ptr %380, i64 384
  store double 0.000000e+00, ptr %382, align 8, !tbaa !40
  %383 = getelementptr i8, ptr %380, i64 448
  store double 0.000000e+00, ptr %383, align 8, !tbaa !40
  %384 = getelementptr i8, ptr %380, i64 512
  store double 0.000000e+00, ptr %384, align 8, !tbaa !40
  %385 = getelementptr i8, ptr %380, i64 640
  store double 0.000000e+00, ptr %385, align 8, !tbaa !40
  store double %230, ptr %380, align 8, !tbaa !40
  %386 = load double, ptr %328, align 8, !tbaa !40
  %387 = getelementptr inbounds nuw i8, ptr %156, i64 4544
  %388 = getelementptr inbounds double, ptr %387, i64 %6
  store double %386, ptr %388, align 8, !tbaa !40
  %389 = getelementptr inbounds nuw i8, ptr %156, i64 4608
  %390 = getelementptr inbounds double, ptr %389, i64 %6
  store double %350, ptr %390, align 8, !tbaa !40
  %391 = getelementptr inbounds nuw i8, ptr %156, i64 4672
  %392 = getelementptr inbounds double, ptr %391, i64 %6
  store double %334, ptr %392, align 8, !tbaa !40
  %393 = getelementptr inbounds nuw i8, ptr %156, i64 5056
  %394 = getelementptr inbounds double, ptr %393, i64 %6
  store double %229, ptr %394, align 8, !tbaa !40
  %395 = getelementptr inbounds nuw i8, ptr %156, i64 4736
  %396 = getelementptr inbounds double, ptr %395, i64 %6
  store double %357, ptr %396, align 8, !tbaa !40
  %397 = getelementptr inbounds nuw i8, ptr %156, i64 5184
  %398 = getelementptr inbounds double, ptr %397, i64 %6
  store double %323, ptr %398, align 8, !tbaa !40
  %399 = load double, ptr %339, align 8, !tbaa !40
  %400 = fadd double %334, %399
  %401 = getelementptr inbounds nuw i8, ptr %156, i64 1600
  %402 = getelementptr inbounds double, ptr %401, i64 %6
  store double %400, ptr %402, align 8, !tbaa !40
  %403 = getelementptr inbounds nuw i8, ptr %156, i64 5568
  %404 = getelementptr inbounds nuw i8, ptr %156, i64 6400
  %405 = getelementptr inbounds nuw i8, ptr %156, i64 6464
  %406 = getelementptr inbounds nuw i8, ptr %156, i64 7232
  %407 = getelementptr inbounds double, ptr %403, i64 %6
  store double %229, ptr %407, align 8, !tbaa !40
  %408 = getelementptr inbounds double, ptr %404, i64 %6
  store double %229, ptr %408, align 8, !tbaa !40
  %409 = getelementptr inbounds double, ptr %405, i64 %6
  store double %229, ptr %409, align 8, !tbaa !40
  %410 = getelementptr inbounds double, ptr %406, i64 %6
  store double %229, ptr %410, align 8, !tbaa !40
  %411 = getelementptr inbounds nuw i8, ptr %156, i64 5632
  %412 = getelementptr inbounds nuw i8, ptr %156, i64 5696
  %413 = getelementptr inbounds nuw i8, ptr %156, i64 7296
  %414 = getelementptr inbounds nuw i8, ptr %156, i64 7168
  %415 = getelementptr inbounds nuw i8, ptr %156, i64 6848
  %416 = getelementptr inbounds double, ptr %411, i64 %6
  store double 0.000000e+00, ptr %416, align 8, !tbaa !40
  %417 = getelementptr inbounds double, ptr %412, i64 %6
  store double 0.000000e+00, ptr %417, align 8, !tbaa !40
  %418 = getelementptr inbounds double, ptr %413, i64 %6
  store double 0.000000e+00, ptr %418, align 8, !tbaa !40
  %419 = getelementptr inbounds double, ptr %414, i64 %6
  store double 0.000000e+00, ptr %419, align 8, !tbaa !40
  %420 = getelementptr inbounds double, ptr %415, i64 %6
  store double 0.000000e+00, ptr %420, align 8, !tbaa !40
  %421 = getelementptr inbounds nuw i8, ptr %156, i64 7360
  %422 = getelementptr inbounds i64, ptr %421, i64 %6
  store i64 0, ptr %422, align 8, !tbaa !30
  %423 = getelementptr inbounds nuw i8, ptr %156, i64 7424
  %424 = getelementptr inbounds i64, ptr %423, i64 %6
  store i64 -1, ptr %424, align 8, !tbaa !30
  %425 = getelementptr inbounds nuw i8, ptr %156, i64 7488
  %426 = getelementptr inbounds i64, ptr %425, i64 %6
  store i64 0, ptr %426, align 8, !tbaa !30
  br i1 %195, label %449, label %465

427:                                              ; preds = %282, %427
  %428 = phi i64 [ 0, %282 ], [ %447, %427 ]
  %429 = icmp slt i64 %428, %165
  %430 = select i1 %429, double %283, double 1.000000e+00
  %431 = shl i64 %428, 8
  %432 = getelementptr i8, ptr %286, i64 %431
  %433 = load double, ptr %432, align 8, !tbaa !40
  %434 = fmul double %430, %433
  store double %434, ptr %432, align 8, !tbaa !40
  %435 = fdiv double %430, %230
  %436 = getelementptr i8, ptr %432, i64 64
  %437 = load double, ptr %436, align 8, !tbaa !40
  %438 = fmul double %435, %437
  store double %438, ptr %436, align 8, !tbaa !40
  %439 = fdiv double %435, %230
  %440 = getelementptr i8, ptr %432, i64 128
  %441 = load double, ptr %440, align 8, !tbaa !40
  %442 = fmul double %439, %441
  store double %442, ptr %440, align 8, !tbaa !40
  %443 = fdiv double %439, %230
  %444 = getelementptr i8, ptr %432, i64 192
  %445 = load double, ptr %444, align 8, !tbaa !40
  %446 = fmul double %443, %445
  store double %446, ptr %444, align 8, !tbaa !40
  %447 = add nuw nsw i64 %428, 1
  %448 = icmp slt i64 %428, %159
  br i1 %448, label %427, label %308, !llvm.loop !153

449:                                              ; preds = %308
  %450 = getelementptr inbounds nuw i8, ptr %156, i64 7576
  %451 = load ptr, ptr %450, align 8, !tbaa !55
  %452 = getelementptr double, ptr %451, i64 %6
  %453 = getelementptr inbounds nuw i8, ptr %156, i64 7568
  %454 = load ptr, ptr %453, align 16, !tbaa !44
  %455 = getelementptr double, ptr %454, i64 %6
  %456 = getelementptr inbounds nuw i8, ptr %156, i64 7560
  %457 = load ptr, ptr %456, align 8, !tbaa !56
  %458 = getelementptr double, ptr %457, i64 %6
  %459 = getelementptr inbounds nuw i8, ptr %156, i64 7600
  %460 = load ptr, ptr %459, align 16, !tbaa !45
  %461 = getelementptr double, ptr %460, i64 %6
  %462 = getelementptr inbounds nuw i8, ptr %156, i64 7592
  %463 = load ptr, ptr %462, align 8, !tbaa !63
  %464 = getelementptr double, ptr %463, i64 %6
  br label %478

465:                                              ; preds = %478, %308
  %466 = icmp slt i64 %160, 0
  br i1 %466, label %539, label %467

467:                                              ; preds = %465
  %468 = getelementptr inbounds nuw i8, ptr %156, i64 7744
  %469 = load ptr, ptr %468, align 64, !tbaa !58
  %470 = getelementptr double, ptr %469, i64 %6
  %471 = getelementptr inbounds nuw i8, ptr %156, i64 7736
  %472 = load ptr, ptr %471, align 8, !tbaa !47
  %473 = getelementptr double, ptr %472, i64 %6
  %474 = icmp eq i64 %160, 0
  br i1 %474, label %487, label %475

475:                                              ; preds = %467
  %476 = add nuw i64 %160, 1
  %477 = and i64 %476, -2
  br label %512

478:                                              ; preds = %449, %478
  %479 = phi i64 [ 0, %449 ], [ %485, %478 ]
  %480 = getelementptr <8 x double>, ptr %452, i64 %479
  store double %229, ptr %480, align 8, !tbaa !40
  %481 = getelementptr <8 x double>, ptr %455, i64 %479
  store double %229, ptr %481, align 8, !tbaa !40
  %482 = getelementptr <8 x double>, ptr %458, i64 %479
  store double %229, ptr %482, align 8, !tbaa !40
  %483 = getelementptr <8 x double>, ptr %461, i64 %479
  store double 1.000000e+00, ptr %483, align 8, !tbaa !40
  %484 = getelementptr <8 x double>, ptr %464, i64 %479
  store double 1.000000e+00, ptr %484, align 8, !tbaa !40
  %485 = add nuw nsw i64 %479, 1
  %486 = icmp eq i64 %485, %159
  br i1 %486, label %465, label %478, !llvm.loop !154

487:                                              ; preds = %526, %467
  %488 = phi i64 [ 0, %467 ], [ %530, %526 ]
  %489 = and i64 %160, 1
  %490 = icmp eq i64 %489, 0
  br i1 %490, label %491, label %499

491:                                              ; preds = %487
  %492 = icmp slt i64 %488, %160
  br i1 %492, label %495, label %493

493:                                              ; preds = %491
  %494 = load double, ptr %328, align 8, !tbaa !40
  br label %495

495:                                              ; preds = %493, %491
  %496 = phi double [ %494, %493 ], [ %323, %491 ]
  %497 = getelementptr <8 x double>, ptr %470, i64 %488
  store double %496, ptr %497, align 8, !tbaa !40
  %498 = getelementptr <8 x double>, ptr %473, i64 %488
  store double %496, ptr %498, align 8, !tbaa !40
  br label %499

499:                                              ; preds = %487, %495
  %500 = icmp eq i64 %160, 0
  br i1 %500, label %539, label %501

501:                                              ; preds = %499
  %502 = getelementptr inbounds nuw i8, ptr %156, i64 7696
  %503 = load ptr, ptr %502, align 16, !tbaa !60
  %504 = getelementptr double, ptr %503, i64 %6
  %505 = getelementptr inbounds nuw i8, ptr %156, i64 7688
  %506 = load ptr, ptr %505, align 8, !tbaa !48
  %507 = getelementptr double, ptr %506, i64 %6
  %508 = and i64 %160, 1
  %509 = icmp eq i64 %160, 1
  br i1 %509, label %533, label %510

510:                                              ; preds = %501
  %511 = and i64 %160, 9223372036854775806
  br label %543

512:                                              ; preds = %526, %475
  %513 = phi i64 [ 0, %475 ], [ %530, %526 ]
  %514 = phi i64 [ 0, %475 ], [ %531, %526 ]
  %515 = icmp slt i64 %513, %160
  br i1 %515, label %518, label %516

516:                                              ; preds = %512
  %517 = load double, ptr %328, align 8, !tbaa !40
  br label %518

518:                                              ; preds = %512, %516
  %519 = phi double [ %517, %516 ], [ %323, %512 ]
  %520 = getelementptr <8 x double>, ptr %470, i64 %513
  store double %519, ptr %520, align 8, !tbaa !40
  %521 = getelementptr <8 x double>, ptr %473, i64 %513
  store double %519, ptr %521, align 8, !tbaa !40
  %522 = or disjoint i64 %513, 1
  %523 = icmp slt i64 %522, %160
  br i1 %523, label %526, label %524

524:                                              ; preds = %518
  %525 = load double, ptr %328, align 8, !tbaa !40
  br label %526

526:                                              ; preds = %524, %518
  %527 = phi double [ %525, %524 ], [ %323, %518 ]
  %528 = getelementptr <8 x double>, ptr %470, i64 %522
  store double %527, ptr %528, align 8, !tbaa !40
  %529 = getelementptr <8 x double>, ptr %473, i64 %522
  store double %527, ptr %529, align 8, !tbaa !40
  %530 = add nuw i64 %513, 2
  %531 = add i64 %514, 2
  %532 = icmp eq i64 %531, %477
  br i1 %532, label %487, label %512, !llvm.loop !155

533:                                              ; preds = %543, %501
  %534 = phi i64 [ 0, %501 ], [ %551, %543 ]
  %535 = icmp eq i64 %508, 0
  br i1 %535, label %539, label %536

536:                                              ; preds = %533
  %537 = getelementptr <8 x double>, ptr %504, i64 %534
  store double %229, ptr %537, align 8, !tbaa !40
  %538 = getelementptr <8 x double>, ptr %507, i64 %534
  store double %229, ptr %538, align 8, !tbaa !40
  br label %539

539:                                              ; preds = %536, %533, %465, %499
  %540 = add nuw nsw i64 %155, 1
  %541 = load i64, ptr %27, align 8, !tbaa !20
  %542 = icmp slt i64 %540, %541
  br i1 %542, label %154, label %61, !llvm.loop !156

543:                                              ; preds = %543, %510
  %544 = phi i64 [ 0, %510 ], [ %551, %543 ]
  %545 = phi i64 [ 0, %510 ], [ %552, %543 ]
  %546 = getelementptr <8 x double>, ptr %504, i64 %544
  store double %229, ptr %546, align 8, !tbaa !40
  %547 = getelementptr <8 x double>, ptr %507, i64 %544
  store double %229, ptr %547, align 8, !tbaa !40
  %548 = or disjoint i64 %544, 1
  %549 = getelementptr <8 x double>, ptr %504, i64 %548
  store double %229, ptr %549, align 8, !tbaa !40
  %550 = getelementptr <8 x double>, ptr %507, i64 %548
  store double %229, ptr %550, align 8, !tbaa !40
  %551 = add nuw nsw i64 %544, 2
  %552 = add i64 %545, 2
  %553 = icmp eq i64 %552, %511
  br i1 %553, label %533, label %543, !llvm.loop !157
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 15) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !158
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !159
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !40
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !160
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !40
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !40
  %31 = fsub double %27, %30
  %32 = icmp sgt i64 %24, %20
  br i1 %32, label %33, label %69

33:                                               ; preds = %3
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %35 = getelementptr inbounds double, ptr %34, i64 %10
  br label %36

36:                                               ; preds = %33, %66
  %37 = phi i64 [ %20, %33 ], [ %67, %66 ]
  %38 = mul nsw i64 %37, 48
  %39 = getelementptr inbounds i8, ptr %16, i64 %38
  %40 = load double, ptr %39, align 8, !tbaa !40
  %41 = getelementptr inbounds nuw i8, ptr %39, i64 40
  %42 = load double, ptr %41, align 8, !tbaa !40
  %43 = fcmp ult double %42, 0.000000e+00
  br i1 %43, label %49, label %44

44:                                               ; preds = %36
  %45 = load double, ptr %35, align 8, !tbaa !40
  %46 = fsub double %42, %45
  %47 = fcmp ogt double %46, 0x3EB0C6F7A0B5ED8D
  %48 = select i1 %47, double %46, double 0.000000e+00
  br label %49

49:                                               ; preds = %44, %36
  %50 = phi double [ %48, %44 ], [ %40, %36 ]
  %51 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %52 = load double, ptr %51, align 8, !tbaa !40
  %53 = fcmp oeq double %52, 2.000000e+00
  br i1 %53, label %54, label %62

54:                                               ; preds = %49
  %55 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %56 = load double, ptr %55, align 8, !tbaa !40
  %57 = fcmp oeq double %56, 4.000000e+00
  br i1 %57, label %58, label %62

58:                                               ; preds = %54
  %59 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %60 = load double, ptr %59, align 8, !tbaa !40
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
  br i1 %68, label %69, label %36, !llvm.loop !161

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !40
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !40
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !40
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !40
  br label %284

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !40
  %82 = load double, ptr %35, align 8, !tbaa !40
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !40
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !40
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !40
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !40
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !40
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !40
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !40
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !40
  %99 = load double, ptr %80, align 8, !tbaa !40
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !40
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %215

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %152

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 5960
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
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 4032
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fmul <8 x double> %123, %125
  %127 = fadd <8 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 128
  %131 = load <8 x double>, ptr %130, align 64, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 4032
  %133 = load <8 x double>, ptr %132, align 64, !tbaa !26
  %134 = fmul <8 x double> %131, %133
  %135 = fadd <8 x double> %127, %134
  %136 = add nuw nsw i64 %119, 2
  %137 = add i64 %120, 2
  %138 = icmp eq i64 %137, %116
  br i1 %138, label %139, label %117, !llvm.loop !162

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
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 4032
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
  %172 = load double, ptr %171, align 8, !tbaa !40
  %173 = fmul double %172, %169
  %174 = fdiv double %173, %30
  %175 = fcmp ogt double %174, 0.000000e+00
  %176 = fneg double %174
  %177 = select i1 %175, double %176, double -0.000000e+00
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %179 = getelementptr inbounds double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !40
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
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %214 = getelementptr inbounds double, ptr %213, i64 %10
  store double %212, ptr %214, align 8, !tbaa !40
  br label %215

215:                                              ; preds = %79, %152
  %216 = fcmp une double %99, %103
  br i1 %216, label %217, label %256

217:                                              ; preds = %215
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %219 = getelementptr inbounds double, ptr %218, i64 %10
  store double %99, ptr %219, align 8, !tbaa !40
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %221 = getelementptr inbounds double, ptr %220, i64 %10
  store double %82, ptr %221, align 8, !tbaa !40
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %223 = getelementptr inbounds double, ptr %222, i64 %10
  %224 = load double, ptr %223, align 8, !tbaa !40
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %226 = getelementptr inbounds double, ptr %225, i64 %10
  store double %224, ptr %226, align 8, !tbaa !40
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %228 = getelementptr inbounds i64, ptr %227, i64 %10
  store i64 -1, ptr %228, align 8, !tbaa !30
  %229 = fcmp oeq double %99, 0.000000e+00
  %230 = fcmp oeq double %99, 3.000000e+00
  %231 = or i1 %229, %230
  br i1 %231, label %232, label %240

232:                                              ; preds = %217
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %234 = getelementptr inbounds double, ptr %233, i64 %10
  store double %30, ptr %234, align 8, !tbaa !40
  store double %30, ptr %26, align 8, !tbaa !40
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %236 = getelementptr inbounds double, ptr %235, i64 %10
  %237 = load double, ptr %236, align 8, !tbaa !40
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %239 = getelementptr inbounds double, ptr %238, i64 %10
  store double %237, ptr %239, align 8, !tbaa !40
  br label %240

240:                                              ; preds = %217, %232
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %242 = load i64, ptr %241, align 8, !tbaa !20
  %243 = icmp sgt i64 %242, 0
  br i1 %243, label %244, label %256

244:                                              ; preds = %240
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %246 = load ptr, ptr %245, align 8, !tbaa !28
  %247 = getelementptr i64, ptr %246, i64 %10
  %248 = sext i1 %230 to i64
  br label %249

249:                                              ; preds = %244, %249
  %250 = phi i64 [ 0, %244 ], [ %253, %249 ]
  %251 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 38
  store i64 -1, ptr %251, align 8, !tbaa !30
  %252 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 39
  store i64 %248, ptr %252, align 8, !tbaa !30
  %253 = add nuw nsw i64 %250, 1
  %254 = load i64, ptr %241, align 8, !tbaa !20
  %255 = icmp slt i64 %253, %254
  br i1 %255, label %249, label %256, !llvm.loop !163

256:                                              ; preds = %249, %240, %215
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %257 = getelementptr inbounds i64, ptr %4, i64 %10
  store i64 -1, ptr %257, align 8, !tbaa !30
  %258 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %259 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %260 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %261 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %262 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %263 = fmul <8 x double> %262, splat (double 5.000000e-01)
  %264 = load <8 x double>, ptr %89, align 64, !tbaa !26
  %265 = fadd <8 x double> %264, %263
  %266 = fadd <8 x double> %265, splat (double -1.000000e-03)
  %267 = fcmp ult <8 x double> %260, %266
  %268 = fsub <8 x double> %264, %263
  %269 = fadd <8 x double> %268, splat (double 1.000000e-03)
  %270 = fcmp ole <8 x double> %260, %269
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 5440
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
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %282 = load <8 x i64>, ptr %281, align 64, !tbaa !26
  %283 = or <8 x i64> %276, %282
  store <8 x i64> %283, ptr %281, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #7
  br label %284

284:                                              ; preds = %256, %69
  ret void
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fmuladd.v8f64(<8 x double>, <8 x double>, <8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.vector.reduce.or.v8i64(<8 x i64>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.vector.reduce.fmin.v8f64(<8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fabs.v8f64(<8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.sqrt.v8f64(<8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.vector.reduce.fmax.v8f64(<8 x double>) #4

; Function Attrs: nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.smin.i64(i64, i64) #5

attributes #0 = { nounwind }
attributes #1 = { nounwind }
attributes #2 = { nounwind }
attributes #3 = { nounwind }
attributes #4 = { nounwind }
attributes #5 = { nounwind }
attributes #6 = { nounwind }
attributes #7 = { nounwind }

!4 = !{!5, !6, i64 16}
!5 = !{!"_ZTS3Job", !6, i64 0, !6, i64 8, !6, i64 16, !6, i64 24, !6, i64 32, !6, i64 40, !6, i64 48, !6, i64 56, !9, i64 64, !10, i64 72, !10, i64 80, !10, i64 88, !10, i64 96, !12, i64 104, !12, i64 112, !12, i64 120, !12, i64 128, !12, i64 136, !10, i64 144, !12, i64 152, !10, i64 160, !12, i64 168, !6, i64 176, !6, i64 184, !10, i64 192, !10, i64 200, !10, i64 208}
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
!16 = !{!17, !6, i64 2304}
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2304, !6, i64 2312, !6, i64 2320, !6, i64 2328, !6, i64 2336, !6, i64 2344, !7, i64 2368, !7, i64 2432, !7, i64 2816, !7, i64 3200, !7, i64 3584, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5824, !7, i64 5888, !11, i64 5952, !19, i64 5960}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 2312}
!21 = !{!17, !6, i64 2320}
!22 = !{!17, !6, i64 2328}
!23 = !{!5, !6, i64 32}
!24 = !{!17, !6, i64 2336}
!25 = !{!5, !9, i64 64}
!26 = !{!7, !7, i64 0}
!27 = !{!17, !6, i64 2344}
!28 = !{!17, !19, i64 5960}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 7552}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3712, !7, i64 4480, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !6, i64 7552, !11, i64 7560, !11, i64 7568, !11, i64 7576, !11, i64 7584, !11, i64 7592, !11, i64 7600, !11, i64 7608, !11, i64 7616, !11, i64 7624, !11, i64 7632, !11, i64 7640, !11, i64 7648, !11, i64 7656, !11, i64 7664, !11, i64 7672, !11, i64 7680, !11, i64 7688, !11, i64 7696, !11, i64 7704, !11, i64 7712, !11, i64 7720, !11, i64 7728, !11, i64 7736, !11, i64 7744}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!11, !11, i64 0}
!35 = !{!32, !11, i64 7672}
!36 = !{!17, !11, i64 5952}
!37 = !{!5, !6, i64 0}
!38 = !{!5, !6, i64 176}
!39 = !{!5, !6, i64 184}
!40 = !{!9, !9, i64 0}
!41 = !{!5, !10, i64 208}
!42 = !{!5, !10, i64 192}
!43 = !{!5, !10, i64 200}
!44 = !{!32, !11, i64 7568}
!45 = !{!32, !11, i64 7600}
!46 = !{!32, !11, i64 7656}
!47 = !{!32, !11, i64 7736}
!48 = !{!32, !11, i64 7688}
!49 = distinct !{!49, !50}
!50 = !{!"llvm.loop.mustprogress"}
!51 = distinct !{!51, !50}
!52 = distinct !{!52, !50}
!53 = distinct !{!53, !50}
!54 = distinct !{!54, !50}
!55 = !{!32, !11, i64 7576}
!56 = !{!32, !11, i64 7560}
!57 = !{!32, !11, i64 7584}
!58 = !{!32, !11, i64 7744}
!59 = distinct !{!59, !50}
!60 = !{!32, !11, i64 7696}
!61 = !{!32, !11, i64 7704}
!62 = distinct !{!62, !50}
!63 = !{!32, !11, i64 7592}
!64 = distinct !{!64, !50}
!65 = distinct !{!65, !50}
!66 = distinct !{!66, !50}
!67 = distinct !{!67, !50}
!68 = distinct !{!68, !50}
!69 = distinct !{!69, !50}
!70 = !{!32, !11, i64 7648}
!71 = !{!32, !11, i64 7624}
!72 = !{!32, !11, i64 7632}
!73 = !{!32, !11, i64 7640}
!74 = !{!32, !11, i64 7608}
!75 = !{!32, !11, i64 7616}
!76 = distinct !{!76, !50}
!77 = distinct !{!77, !50}
!78 = !{!32, !11, i64 7728}
!79 = distinct !{!79, !50}
!80 = !{!32, !11, i64 7712}
!81 = !{!32, !11, i64 7720}
!82 = distinct !{!82, !50}
!83 = distinct !{!83, !50}
!84 = distinct !{!84, !50}
!85 = distinct !{!85, !50}
!86 = !{!87}
!87 = distinct !{!87, !88, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!88 = distinct !{!88, !"_ZL9evaporateR5GroupDv8_d"}
!89 = !{!90}
!90 = distinct !{!90, !91, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!91 = distinct !{!91, !"_ZL7outflowRK5GroupDv8_dS2_"}
!92 = !{!93}
!93 = distinct !{!93, !94, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!94 = distinct !{!94, !"_ZL8condenseR5GroupDv8_d"}
!95 = distinct !{!95, !50}
!96 = !{!97, !87}
!97 = distinct !{!97, !98, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d: argument 0"}
!98 = distinct !{!98, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d"}
!99 = distinct !{!99, !50}
!100 = distinct !{!100, !50}
!101 = !{!102}
!102 = distinct !{!102, !103, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!103 = distinct !{!103, !"_ZL9evaporateR5GroupDv8_d"}
!104 = !{!105, !102}
!105 = distinct !{!105, !106, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d: argument 0"}
!106 = distinct !{!106, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d"}
!107 = distinct !{!107, !50}
!108 = distinct !{!108, !50}
!109 = !{!32, !11, i64 7680}
!110 = distinct !{!110, !50}
!111 = distinct !{!111, !50}
!112 = distinct !{!112, !50}
!113 = distinct !{!113, !50}
!114 = distinct !{!114, !50}
!115 = distinct !{!115, !50}
!116 = distinct !{!116, !50}
!117 = distinct !{!117, !50}
!118 = distinct !{!118, !50}
!119 = !{!32, !11, i64 7664}
!120 = distinct !{!120, !50}
!121 = distinct !{!121, !50}
!122 = distinct !{!122, !50}
!123 = distinct !{!123, !50}
!124 = distinct !{!124, !50}
!125 = distinct !{!125, !50}
!126 = distinct !{!126, !50}
!127 = distinct !{!127, !50}
!128 = distinct !{!128, !50}
!129 = distinct !{!129, !50}
!130 = distinct !{!130, !50}
!131 = distinct !{!131, !50}
!132 = !{!5, !6, i64 40}
!133 = distinct !{!133, !50}
!134 = distinct !{!134, !50}
!135 = !{!5, !6, i64 56}
!136 = !{!10, !10, i64 0}
!137 = !{!5, !12, i64 168}
!138 = !{!5, !10, i64 160}
!139 = distinct !{!139, !50}
!140 = distinct !{!140, !141}
!141 = !{!"llvm.loop.unroll.disable"}
!142 = distinct !{!142, !50}
!143 = distinct !{!143, !141}
!144 = !{!5, !10, i64 80}
!145 = !{!5, !10, i64 72}
!146 = !{!5, !10, i64 96}
!147 = !{!5, !12, i64 104}
!148 = distinct !{!148, !50}
!149 = distinct !{!149, !50}
!150 = distinct !{!150, !50}
!151 = distinct !{!151, !141}
!152 = distinct !{!152, !50}
!153 = distinct !{!153, !50}
!154 = distinct !{!154, !50}
!155 = distinct !{!155, !50}
!156 = distinct !{!156, !50}
!157 = distinct !{!157, !50}
!158 = !{!5, !10, i64 88}
!159 = !{!5, !12, i64 112}
!160 = !{!5, !12, i64 120}
!161 = distinct !{!161, !50}
!162 = distinct !{!162, !50}
!163 = distinct !{!163, !50}
