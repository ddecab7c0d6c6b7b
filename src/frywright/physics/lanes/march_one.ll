; Made by scripts/lanes.py from sources of sha256 7f08506d2f446d8fee84825fa67b816dadaff9e8f691f7d93f32887320d047dd.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <8 x double>], [14 x <8 x double>], [14 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Flash, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, [8 x ptr], ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }
%struct.Flash = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define range(i64 17216, 17153) i64 @work_space_one(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
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
  %13 = add i64 %12, 17216
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
  %17 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store i64 %16, ptr %17, align 64, !tbaa !16
  %18 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  store i64 1, ptr %18, align 8, !tbaa !20
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %20 = load i64, ptr %19, align 8, !tbaa !4
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  store i64 %20, ptr %21, align 16, !tbaa !21
  %22 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %23 = load i64, ptr %22, align 8, !tbaa !13
  %24 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  store i64 %23, ptr %24, align 8, !tbaa !22
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %26 = load i64, ptr %25, align 8, !tbaa !23
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  store i64 %26, ptr %27, align 32, !tbaa !24
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %29 = load double, ptr %28, align 8, !tbaa !25
  %30 = insertelement <8 x double> poison, double %29, i64 0
  %31 = shufflevector <8 x double> %30, <8 x double> poison, <8 x i32> zeroinitializer
  %32 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  store <8 x double> %31, ptr %32, align 64, !tbaa !26
  %33 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  store i64 0, ptr %33, align 8, !tbaa !27
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 6272
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 6216
  store ptr %34, ptr %35, align 8, !tbaa !28
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 15104
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
  %55 = getelementptr inbounds nuw i8, ptr %1, i64 14784
  store i64 %54, ptr %55, align 64, !tbaa !31
  %56 = getelementptr inbounds nuw i8, ptr %1, i64 14856
  %57 = getelementptr inbounds nuw i8, ptr %1, i64 14864
  %58 = getelementptr inbounds nuw i8, ptr %1, i64 14872
  %59 = getelementptr inbounds nuw i8, ptr %1, i64 14880
  %60 = getelementptr inbounds nuw i8, ptr %1, i64 14888
  %61 = getelementptr inbounds nuw i8, ptr %1, i64 14896
  %62 = getelementptr inbounds nuw i8, ptr %1, i64 14904
  %63 = getelementptr inbounds nuw i8, ptr %1, i64 14912
  %64 = getelementptr inbounds nuw i8, ptr %1, i64 14920
  %65 = getelementptr inbounds nuw i8, ptr %1, i64 14928
  %66 = getelementptr inbounds nuw i8, ptr %1, i64 14936
  %67 = getelementptr inbounds nuw i8, ptr %1, i64 14944
  %68 = getelementptr inbounds nuw i8, ptr %1, i64 14952
  %69 = getelementptr inbounds nuw i8, ptr %1, i64 14960
  store ptr %36, ptr %56, align 8, !tbaa !35
  store ptr %39, ptr %57, align 8, !tbaa !35
  store ptr %40, ptr %58, align 8, !tbaa !35
  store ptr %41, ptr %59, align 8, !tbaa !35
  store ptr %42, ptr %60, align 8, !tbaa !35
  store ptr %43, ptr %61, align 8, !tbaa !35
  store ptr %44, ptr %62, align 8, !tbaa !35
  store ptr %45, ptr %63, align 8, !tbaa !35
  store ptr %46, ptr %64, align 8, !tbaa !35
  store ptr %47, ptr %65, align 8, !tbaa !35
  store ptr %48, ptr %66, align 8, !tbaa !35
  store ptr %49, ptr %67, align 8, !tbaa !35
  store ptr %50, ptr %68, align 8, !tbaa !35
  store ptr %51, ptr %69, align 8, !tbaa !35
  %70 = getelementptr inbounds nuw i8, ptr %1, i64 14968
  store ptr %52, ptr %70, align 8, !tbaa !36
  %71 = icmp eq i64 %54, 0
  %72 = select i1 %71, i64 0, i64 2
  %73 = shl i64 %38, %72
  %74 = getelementptr inbounds <8 x double>, ptr %52, i64 %73
  %75 = getelementptr inbounds nuw i8, ptr %1, i64 14976
  %76 = getelementptr inbounds nuw i8, ptr %1, i64 14984
  %77 = getelementptr inbounds nuw i8, ptr %1, i64 14992
  %78 = getelementptr inbounds nuw i8, ptr %1, i64 15000
  %79 = getelementptr inbounds nuw i8, ptr %1, i64 15008
  %80 = getelementptr inbounds nuw i8, ptr %1, i64 15016
  %81 = getelementptr inbounds nuw i8, ptr %1, i64 15024
  %82 = getelementptr inbounds nuw i8, ptr %1, i64 15032
  %83 = getelementptr inbounds nuw i8, ptr %1, i64 15040
  store ptr %74, ptr %75, align 8, !tbaa !35
  %84 = getelementptr <8 x double>, ptr %74, i64 %23
  %85 = getelementptr i8, ptr %84, i64 64
  store ptr %85, ptr %76, align 8, !tbaa !35
  %86 = getelementptr <8 x double>, ptr %85, i64 %23
  %87 = getelementptr i8, ptr %86, i64 64
  store ptr %87, ptr %77, align 8, !tbaa !35
  %88 = getelementptr <8 x double>, ptr %87, i64 %23
  %89 = getelementptr i8, ptr %88, i64 64
  store ptr %89, ptr %78, align 8, !tbaa !35
  %90 = getelementptr <8 x double>, ptr %89, i64 %23
  %91 = getelementptr i8, ptr %90, i64 64
  store ptr %91, ptr %79, align 8, !tbaa !35
  %92 = getelementptr <8 x double>, ptr %91, i64 %23
  %93 = getelementptr i8, ptr %92, i64 64
  store ptr %93, ptr %80, align 8, !tbaa !35
  %94 = getelementptr <8 x double>, ptr %93, i64 %23
  %95 = getelementptr i8, ptr %94, i64 64
  store ptr %95, ptr %81, align 8, !tbaa !35
  %96 = getelementptr <8 x double>, ptr %95, i64 %23
  %97 = getelementptr i8, ptr %96, i64 64
  store ptr %97, ptr %82, align 8, !tbaa !35
  %98 = getelementptr <8 x double>, ptr %97, i64 %23
  %99 = getelementptr i8, ptr %98, i64 64
  store ptr %99, ptr %83, align 8, !tbaa !35
  %100 = getelementptr <8 x double>, ptr %99, i64 %23
  %101 = getelementptr i8, ptr %100, i64 64
  %102 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  store ptr %101, ptr %102, align 64, !tbaa !37
  %103 = load i64, ptr %0, align 8, !tbaa !38
  %104 = icmp sgt i64 %103, 0
  br i1 %104, label %105, label %106

105:                                              ; preds = %14
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #6
  br label %109

106:                                              ; preds = %14
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %108 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #6
  store i64 0, ptr %108, align 8, !tbaa !30
  store i64 0, ptr %107, align 8, !tbaa !30
  br label %109

109:                                              ; preds = %106, %105, %3
  %110 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %113 = load i64, ptr %111, align 8, !tbaa !39
  %114 = load i64, ptr %112, align 8, !tbaa !40
  %115 = sub nsw i64 %113, %114
  %116 = icmp slt i64 %115, 16
  br i1 %116, label %5933, label %117

117:                                              ; preds = %109
  %118 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  %121 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 216
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %124 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %125 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %126 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %127 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %129 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %130 = getelementptr inbounds nuw i8, ptr %1, i64 6216
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %170 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %172 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %173 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %223 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 6080
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 5512
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 5576
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 5520
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 5584
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 5528
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 5592
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 5536
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 5600
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5544
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 5608
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 5552
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 5616
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 5560
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 5624
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 6152
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 6160
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 6168
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 6176
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 6184
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 6192
  %276 = getelementptr inbounds nuw i8, ptr %1, i64 6200
  br label %277

277:                                              ; preds = %117, %519
  %278 = load i64, ptr %110, align 8, !tbaa !30
  %279 = icmp eq i64 %278, 0
  br i1 %279, label %524, label %280

280:                                              ; preds = %277
  %281 = load double, ptr %118, align 8, !tbaa !41
  %282 = fcmp oeq double %281, 0.000000e+00
  br i1 %282, label %524, label %283

283:                                              ; preds = %280
  %284 = load i64, ptr %119, align 16, !tbaa !21
  %285 = load i64, ptr %120, align 8, !tbaa !22
  %286 = load i64, ptr %121, align 8, !tbaa !30
  %287 = load ptr, ptr %122, align 8, !tbaa !42
  %288 = mul nsw i64 %286, 40
  %289 = getelementptr inbounds i8, ptr %287, i64 %288
  %290 = load double, ptr %123, align 8, !tbaa !41
  store double %290, ptr %289, align 8, !tbaa !41
  %291 = load double, ptr %124, align 8, !tbaa !41
  %292 = getelementptr inbounds nuw i8, ptr %289, i64 8
  store double %291, ptr %292, align 8, !tbaa !41
  %293 = load double, ptr %125, align 8, !tbaa !41
  %294 = getelementptr inbounds nuw i8, ptr %289, i64 16
  store double %293, ptr %294, align 8, !tbaa !41
  %295 = load double, ptr %126, align 8, !tbaa !41
  %296 = getelementptr inbounds nuw i8, ptr %289, i64 24
  store double %295, ptr %296, align 8, !tbaa !41
  %297 = load double, ptr %127, align 8, !tbaa !41
  %298 = getelementptr inbounds nuw i8, ptr %289, i64 32
  store double %297, ptr %298, align 8, !tbaa !41
  %299 = load i64, ptr %128, align 8, !tbaa !43
  %300 = icmp eq i64 %299, 0
  br i1 %300, label %508, label %301

301:                                              ; preds = %283
  %302 = load i64, ptr %129, align 64, !tbaa !16
  %303 = icmp sgt i64 %302, 0
  br i1 %303, label %304, label %508

304:                                              ; preds = %301
  %305 = load ptr, ptr %130, align 8, !tbaa !28
  %306 = getelementptr inbounds nuw i8, ptr %305, i64 1536
  %307 = getelementptr inbounds nuw i8, ptr %305, i64 4608
  %308 = load ptr, ptr %131, align 8, !tbaa !44
  %309 = mul nsw i64 %302, %286
  %310 = mul i64 %284, 3
  %311 = load ptr, ptr %132, align 8, !tbaa !45
  %312 = icmp sgt i64 %284, 0
  %313 = getelementptr inbounds nuw i8, ptr %305, i64 8592
  %314 = getelementptr inbounds nuw i8, ptr %305, i64 8624
  %315 = getelementptr inbounds nuw i8, ptr %305, i64 8680
  %316 = getelementptr inbounds nuw i8, ptr %305, i64 8512
  %317 = getelementptr inbounds nuw i8, ptr %305, i64 4672
  %318 = getelementptr inbounds nuw i8, ptr %305, i64 384
  %319 = getelementptr inbounds nuw i8, ptr %305, i64 448
  %320 = getelementptr inbounds nuw i8, ptr %305, i64 512
  %321 = getelementptr inbounds nuw i8, ptr %305, i64 640
  %322 = shl i64 %284, 4
  %323 = icmp sgt i64 %285, 0
  %324 = getelementptr inbounds nuw i8, ptr %305, i64 8760
  %325 = getelementptr inbounds nuw i8, ptr %305, i64 768
  %326 = getelementptr inbounds nuw i8, ptr %305, i64 8712
  %327 = getelementptr inbounds nuw i8, ptr %305, i64 960
  %328 = getelementptr inbounds nuw i8, ptr %305, i64 1408
  %329 = getelementptr inbounds nuw i8, ptr %305, i64 4224
  %330 = getelementptr inbounds nuw i8, ptr %305, i64 4288
  %331 = getelementptr inbounds nuw i8, ptr %305, i64 4160
  %332 = getelementptr inbounds nuw i8, ptr %305, i64 3968
  %333 = getelementptr inbounds nuw i8, ptr %305, i64 4032
  %334 = getelementptr inbounds nuw i8, ptr %305, i64 3904
  %335 = and i64 %285, 1
  %336 = icmp eq i64 %285, 1
  %337 = and i64 %285, 9223372036854775806
  %338 = icmp eq i64 %335, 0
  br label %339

339:                                              ; preds = %428, %304
  %340 = phi i64 [ 0, %304 ], [ %483, %428 ]
  %341 = shl i64 %340, 32
  %342 = ashr exact i64 %341, 32
  %343 = getelementptr inbounds double, ptr %306, i64 %342
  %344 = load double, ptr %343, align 8, !tbaa !41
  %345 = getelementptr inbounds double, ptr %307, i64 %342
  %346 = load double, ptr %345, align 8, !tbaa !41
  %347 = add nsw i64 %340, %309
  %348 = mul i64 %310, %347
  %349 = getelementptr inbounds double, ptr %308, i64 %348
  %350 = mul nsw i64 %347, 40
  %351 = getelementptr inbounds i8, ptr %311, i64 %350
  br i1 %312, label %352, label %362

352:                                              ; preds = %339
  %353 = load ptr, ptr %313, align 16, !tbaa !46
  %354 = load ptr, ptr %314, align 16, !tbaa !47
  %355 = getelementptr double, ptr %354, i64 %342
  %356 = getelementptr double, ptr %349, i64 %284
  %357 = load ptr, ptr %315, align 8, !tbaa !48
  %358 = load i64, ptr %316, align 64, !tbaa !31
  %359 = getelementptr inbounds double, ptr %10, i64 %342
  %360 = getelementptr i8, ptr %349, i64 %322
  %361 = getelementptr inbounds double, ptr %11, i64 %342
  br label %372

362:                                              ; preds = %403, %339
  %363 = phi double [ %346, %339 ], [ %411, %403 ]
  br i1 %323, label %364, label %428

364:                                              ; preds = %362
  %365 = load ptr, ptr %324, align 8, !tbaa !49
  %366 = getelementptr double, ptr %365, i64 %342
  %367 = getelementptr inbounds double, ptr %325, i64 %342
  %368 = load double, ptr %367, align 8, !tbaa !41
  %369 = load ptr, ptr %326, align 8, !tbaa !50
  %370 = getelementptr double, ptr %369, i64 %342
  %371 = load double, ptr %366, align 8, !tbaa !41
  br i1 %336, label %414, label %485

372:                                              ; preds = %403, %352
  %373 = phi double [ %346, %352 ], [ %411, %403 ]
  %374 = phi i64 [ 0, %352 ], [ %412, %403 ]
  %375 = getelementptr inbounds nuw <8 x double>, ptr %353, i64 %374
  %376 = getelementptr inbounds double, ptr %375, i64 %342
  %377 = load double, ptr %376, align 8, !tbaa !41
  %378 = getelementptr inbounds nuw double, ptr %349, i64 %374
  store double %377, ptr %378, align 8, !tbaa !41
  %379 = getelementptr <8 x double>, ptr %355, i64 %374
  %380 = load double, ptr %379, align 8, !tbaa !41
  %381 = getelementptr double, ptr %356, i64 %374
  store double %380, ptr %381, align 8, !tbaa !41
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %382 = getelementptr inbounds nuw <8 x double>, ptr %357, i64 %374
  %383 = load <8 x double>, ptr %382, align 64, !tbaa !26
  %384 = icmp slt i64 %374, %358
  br i1 %384, label %385, label %390

385:                                              ; preds = %372
  %386 = load <8 x double>, ptr %306, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %387 = load <8 x double>, ptr %375, align 64, !tbaa !26
  %388 = load <8 x double>, ptr %321, align 64, !tbaa !26
  %389 = fmul <8 x double> %387, %388
  br label %403

390:                                              ; preds = %372
  %391 = load <8 x double>, ptr %317, align 64, !tbaa !26
  %392 = load <8 x double>, ptr %306, align 64, !tbaa !26
  %393 = fsub <8 x double> %391, %392
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %394 = load <8 x double>, ptr %375, align 64, !tbaa !26
  %395 = load <8 x double>, ptr %318, align 64, !tbaa !26
  %396 = load <8 x double>, ptr %319, align 64, !tbaa !26
  %397 = load <8 x double>, ptr %320, align 64, !tbaa !26
  %398 = fmul <8 x double> %394, %397
  %399 = fmul <8 x double> %398, splat (double 0x3FD5555555555555)
  %400 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %396, <8 x double> splat (double 5.000000e-01), <8 x double> %399)
  %401 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %394, <8 x double> %400, <8 x double> %395)
  %402 = fmul <8 x double> %394, %401
  br label %403

403:                                              ; preds = %390, %385
  %404 = phi <8 x double> [ %386, %385 ], [ %393, %390 ]
  %405 = phi <8 x double> [ %389, %385 ], [ %402, %390 ]
  %406 = fmul <8 x double> %383, %404
  store <8 x double> %406, ptr %10, align 64, !tbaa !26
  %407 = fmul <8 x double> %406, %405
  store <8 x double> %407, ptr %11, align 64, !tbaa !26
  %408 = load double, ptr %359, align 8, !tbaa !41
  %409 = getelementptr double, ptr %360, i64 %374
  store double %408, ptr %409, align 8, !tbaa !41
  %410 = load double, ptr %361, align 8, !tbaa !41
  %411 = fadd double %373, %410
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %412 = add nuw nsw i64 %374, 1
  %413 = icmp eq i64 %412, %284
  br i1 %413, label %362, label %372, !llvm.loop !51

414:                                              ; preds = %485, %364
  %415 = phi double [ poison, %364 ], [ %505, %485 ]
  %416 = phi double [ %371, %364 ], [ %500, %485 ]
  %417 = phi double [ %363, %364 ], [ %505, %485 ]
  %418 = phi i64 [ 0, %364 ], [ %498, %485 ]
  br i1 %338, label %428, label %419

419:                                              ; preds = %414
  %420 = getelementptr <8 x double>, ptr %366, i64 %418
  %421 = getelementptr i8, ptr %420, i64 64
  %422 = load double, ptr %421, align 8, !tbaa !41
  %423 = fsub double %422, %416
  %424 = fmul double %368, %423
  %425 = getelementptr <8 x double>, ptr %370, i64 %418
  %426 = load double, ptr %425, align 8, !tbaa !41
  %427 = tail call double @llvm.fmuladd.f64(double %424, double %426, double %417)
  br label %428

428:                                              ; preds = %419, %414, %362
  %429 = phi double [ %363, %362 ], [ %415, %414 ], [ %427, %419 ]
  %430 = getelementptr inbounds double, ptr %327, i64 %342
  %431 = load double, ptr %430, align 8, !tbaa !41
  %432 = getelementptr inbounds double, ptr %318, i64 %342
  %433 = load double, ptr %432, align 8, !tbaa !41
  %434 = getelementptr inbounds double, ptr %319, i64 %342
  %435 = load double, ptr %434, align 8, !tbaa !41
  %436 = getelementptr inbounds double, ptr %320, i64 %342
  %437 = load double, ptr %436, align 8, !tbaa !41
  %438 = fmul double %431, %437
  %439 = fdiv double %438, 3.000000e+00
  %440 = tail call double @llvm.fmuladd.f64(double %435, double 5.000000e-01, double %439)
  %441 = tail call double @llvm.fmuladd.f64(double %431, double %440, double %433)
  %442 = fmul double %431, %441
  %443 = getelementptr inbounds double, ptr %328, i64 %342
  %444 = load double, ptr %443, align 8, !tbaa !41
  %445 = fsub double %444, %344
  %446 = getelementptr inbounds double, ptr %321, i64 %342
  %447 = load double, ptr %446, align 8, !tbaa !41
  %448 = fmul double %344, %447
  %449 = fmul double %431, %448
  %450 = tail call double @llvm.fmuladd.f64(double %445, double %442, double %449)
  %451 = getelementptr inbounds double, ptr %329, i64 %342
  %452 = load double, ptr %451, align 8, !tbaa !41
  %453 = getelementptr inbounds double, ptr %330, i64 %342
  %454 = load double, ptr %453, align 8, !tbaa !41
  %455 = fsub double %452, %454
  %456 = fsub double %429, %450
  %457 = fsub double %455, %456
  %458 = fcmp ogt double %452, 0.000000e+00
  %459 = fneg double %452
  %460 = select i1 %458, double %452, double %459
  %461 = fcmp ogt double %454, 0.000000e+00
  %462 = fneg double %454
  %463 = select i1 %461, double %454, double %462
  %464 = fadd double %460, %463
  %465 = fcmp ogt double %457, 0.000000e+00
  %466 = fneg double %457
  %467 = select i1 %465, double %457, double %466
  %468 = fcmp ogt double %464, 1.000000e+00
  %469 = select i1 %468, double %464, double 1.000000e+00
  %470 = fdiv double %467, %469
  store double %470, ptr %351, align 8, !tbaa !41
  %471 = getelementptr inbounds double, ptr %331, i64 %342
  %472 = load double, ptr %471, align 8, !tbaa !41
  %473 = getelementptr inbounds nuw i8, ptr %351, i64 8
  store double %472, ptr %473, align 8, !tbaa !41
  %474 = getelementptr inbounds double, ptr %332, i64 %342
  %475 = load double, ptr %474, align 8, !tbaa !41
  %476 = getelementptr inbounds nuw i8, ptr %351, i64 16
  store double %475, ptr %476, align 8, !tbaa !41
  %477 = getelementptr inbounds double, ptr %333, i64 %342
  %478 = load double, ptr %477, align 8, !tbaa !41
  %479 = getelementptr inbounds nuw i8, ptr %351, i64 24
  store double %478, ptr %479, align 8, !tbaa !41
  %480 = getelementptr inbounds double, ptr %334, i64 %342
  %481 = load double, ptr %480, align 8, !tbaa !41
  %482 = getelementptr inbounds nuw i8, ptr %351, i64 32
  store double %481, ptr %482, align 8, !tbaa !41
  %483 = add nuw nsw i64 %340, 1
  %484 = icmp eq i64 %483, %302
  br i1 %484, label %508, label %339, !llvm.loop !53

485:                                              ; preds = %364, %485
  %486 = phi double [ %500, %485 ], [ %371, %364 ]
  %487 = phi double [ %505, %485 ], [ %363, %364 ]
  %488 = phi i64 [ %498, %485 ], [ 0, %364 ]
  %489 = phi i64 [ %506, %485 ], [ 0, %364 ]
  %490 = or disjoint i64 %488, 1
  %491 = getelementptr <8 x double>, ptr %366, i64 %490
  %492 = load double, ptr %491, align 8, !tbaa !41
  %493 = fsub double %492, %486
  %494 = fmul double %368, %493
  %495 = getelementptr <8 x double>, ptr %370, i64 %488
  %496 = load double, ptr %495, align 8, !tbaa !41
  %497 = tail call double @llvm.fmuladd.f64(double %494, double %496, double %487)
  %498 = add nuw nsw i64 %488, 2
  %499 = getelementptr <8 x double>, ptr %366, i64 %498
  %500 = load double, ptr %499, align 8, !tbaa !41
  %501 = fsub double %500, %492
  %502 = fmul double %368, %501
  %503 = getelementptr <8 x double>, ptr %370, i64 %490
  %504 = load double, ptr %503, align 8, !tbaa !41
  %505 = tail call double @llvm.fmuladd.f64(double %502, double %504, double %497)
  %506 = add i64 %489, 2
  %507 = icmp eq i64 %506, %337
  br i1 %507, label %414, label %485, !llvm.loop !54

508:                                              ; preds = %428, %283, %301
  %509 = load i64, ptr %133, align 8, !tbaa !27
  %510 = load i64, ptr %0, align 8, !tbaa !38
  %511 = icmp slt i64 %509, %510
  br i1 %511, label %513, label %512

512:                                              ; preds = %508
  store i64 0, ptr %110, align 8, !tbaa !30
  store i64 0, ptr %134, align 8, !tbaa !30
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
  store i64 0, ptr %238, align 8, !tbaa !30
  store i64 0, ptr %239, align 8, !tbaa !30
  store i64 0, ptr %240, align 8, !tbaa !30
  br label %524

513:                                              ; preds = %508
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #6
  %514 = load i64, ptr %110, align 8, !tbaa !30
  %515 = icmp eq i64 %514, 0
  br i1 %515, label %524, label %516

516:                                              ; preds = %513
  %517 = load double, ptr %118, align 8, !tbaa !41
  %518 = fcmp oeq double %517, 0.000000e+00
  br i1 %518, label %524, label %519

519:                                              ; preds = %5890, %5932, %5929, %4075, %4411, %516
  %520 = load i64, ptr %111, align 8, !tbaa !39
  %521 = load i64, ptr %112, align 8, !tbaa !40
  %522 = sub nsw i64 %520, %521
  %523 = icmp slt i64 %522, 16
  br i1 %523, label %5933, label %277, !llvm.loop !55

524:                                              ; preds = %512, %513, %280, %277, %516
  %525 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %526 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %525)
  %527 = icmp eq i64 %526, 0
  br i1 %527, label %5933, label %528

528:                                              ; preds = %524
  %529 = load <8 x i64>, ptr %134, align 64, !tbaa !26
  %530 = and <8 x i64> %529, %525
  %531 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %530)
  %532 = icmp eq i64 %531, 0
  %533 = load i64, ptr %157, align 8, !tbaa !20
  br i1 %532, label %1505, label %534

534:                                              ; preds = %528
  %535 = load <8 x double>, ptr %135, align 64, !tbaa !26
  %536 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %537 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %538 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %539 = fsub <8 x double> %537, %538
  %540 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %536, <8 x double> %539, <8 x double> %535)
  %541 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %542 = fcmp une <8 x double> %541, splat (double 2.000000e+00)
  %543 = select <8 x i1> %542, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %544 = fmul <8 x double> %540, %543
  %545 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %546 = load <8 x double>, ptr %141, align 64, !tbaa !26
  %547 = fcmp olt <8 x double> %545, %546
  %548 = select <8 x i1> %547, <8 x double> %545, <8 x double> %546
  %549 = fcmp olt <8 x double> %548, %544
  %550 = select <8 x i1> %549, <8 x double> %548, <8 x double> %544
  %551 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %552 = fmul <8 x double> %551, splat (double 5.000000e-01)
  %553 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %554 = load <8 x i64>, ptr %144, align 64, !tbaa !26
  %555 = fneg <8 x double> %552
  %556 = icmp eq <8 x i64> %554, zeroinitializer
  %557 = select <8 x i1> %556, <8 x double> %555, <8 x double> %552
  %558 = fadd <8 x double> %553, %557
  %559 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %560 = fsub <8 x double> %558, %559
  %561 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %562 = select <8 x i1> %556, <8 x double> zeroinitializer, <8 x double> %561
  %563 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %564 = fsub <8 x double> %562, %563
  %565 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %566 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %567 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %568 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %567, <8 x double> %559, <8 x double> %566)
  %569 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %570 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %565, <8 x double> %568, <8 x double> %569)
  %571 = fdiv <8 x double> %564, %570
  %572 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %573 = fsub <8 x double> %559, %572
  %574 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %575 = fdiv <8 x double> %573, %574
  %576 = fsub <8 x double> %571, %575
  %577 = fdiv <8 x double> %576, %574
  %578 = fdiv <8 x double> %560, %571
  %579 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %580 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %581 = or <8 x i64> %580, %579
  %582 = icmp eq <8 x i64> %581, zeroinitializer
  %583 = select <8 x i1> %582, <8 x double> %577, <8 x double> zeroinitializer
  %584 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %583, <8 x double> %578, <8 x double> %571)
  %585 = fdiv <8 x double> %560, %584
  %586 = fcmp ule <8 x double> %585, zeroinitializer
  %587 = select <8 x i1> %586, <8 x double> %578, <8 x double> %585
  %588 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %589 = fcmp une <8 x double> %588, zeroinitializer
  %590 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %591 = fcmp une <8 x double> %590, zeroinitializer
  %592 = fcmp ule <8 x double> %561, zeroinitializer
  %593 = or <8 x i1> %592, %589
  %594 = fcmp ule <8 x double> %578, zeroinitializer
  %595 = or <8 x i1> %594, %593
  %596 = or <8 x i1> %591, %595
  %597 = select <8 x i1> %596, <8 x double> splat (double 1.000000e+09), <8 x double> %587
  %598 = icmp sgt i64 %533, 0
  br i1 %598, label %599, label %667

599:                                              ; preds = %534
  %600 = load ptr, ptr %130, align 8, !tbaa !28
  %601 = fmul <8 x double> %574, splat (double 3.000000e+00)
  br label %602

602:                                              ; preds = %599, %602
  %603 = phi <8 x double> [ %597, %599 ], [ %664, %602 ]
  %604 = phi i64 [ 0, %599 ], [ %665, %602 ]
  %605 = getelementptr inbounds nuw %struct.Piece, ptr %600, i64 %604
  %606 = getelementptr inbounds nuw i8, ptr %605, i64 3904
  %607 = load <8 x double>, ptr %606, align 64, !tbaa !26
  %608 = getelementptr inbounds nuw i8, ptr %605, i64 1472
  %609 = load <8 x double>, ptr %608, align 64, !tbaa !26
  %610 = fsub <8 x double> %607, %609
  %611 = getelementptr inbounds nuw i8, ptr %605, i64 832
  %612 = load <8 x double>, ptr %611, align 64, !tbaa !26
  %613 = fmul <8 x double> %610, %612
  %614 = getelementptr inbounds nuw i8, ptr %605, i64 1600
  %615 = load <8 x double>, ptr %614, align 64, !tbaa !26
  %616 = getelementptr inbounds nuw i8, ptr %605, i64 4160
  %617 = load <8 x double>, ptr %616, align 64, !tbaa !26
  %618 = fsub <8 x double> %615, %617
  %619 = getelementptr inbounds nuw i8, ptr %605, i64 8320
  %620 = load <8 x i64>, ptr %619, align 64, !tbaa !26
  %621 = getelementptr inbounds nuw i8, ptr %605, i64 7616
  %622 = load <8 x double>, ptr %621, align 64, !tbaa !26
  %623 = fcmp une <8 x double> %622, splat (double 1.000000e+00)
  %624 = select <8 x i1> %623, <8 x double> %613, <8 x double> %618
  %625 = getelementptr inbounds nuw i8, ptr %605, i64 3968
  %626 = load <8 x double>, ptr %625, align 64, !tbaa !26
  %627 = icmp eq <8 x i64> %620, zeroinitializer
  %628 = select <8 x i1> %627, <8 x double> %626, <8 x double> %624
  %629 = getelementptr inbounds nuw i8, ptr %605, i64 6016
  %630 = load <8 x double>, ptr %629, align 64, !tbaa !26
  %631 = getelementptr inbounds nuw i8, ptr %605, i64 6080
  %632 = load <8 x double>, ptr %631, align 64, !tbaa !26
  %633 = fadd <8 x double> %630, %632
  %634 = getelementptr inbounds nuw i8, ptr %605, i64 7488
  %635 = load <8 x double>, ptr %634, align 64, !tbaa !26
  %636 = fdiv <8 x double> %635, %574
  %637 = select <8 x i1> %627, <8 x double> %636, <8 x double> zeroinitializer
  %638 = fsub <8 x double> %633, %637
  %639 = fdiv <8 x double> %628, %638
  %640 = getelementptr inbounds nuw i8, ptr %605, i64 4864
  %641 = load <8 x double>, ptr %640, align 64, !tbaa !26
  %642 = fsub <8 x double> %641, %626
  %643 = fdiv <8 x double> %642, %574
  %644 = getelementptr inbounds nuw i8, ptr %605, i64 8384
  %645 = load <8 x i64>, ptr %644, align 64, !tbaa !26
  %646 = or <8 x i64> %645, %620
  %647 = fcmp ule <8 x double> %639, %601
  %648 = fsub <8 x double> %638, %643
  %649 = icmp eq <8 x i64> %646, zeroinitializer
  %650 = select <8 x i1> %647, <8 x i1> %649, <8 x i1> zeroinitializer
  %651 = select <8 x i1> %650, <8 x double> %648, <8 x double> zeroinitializer
  %652 = fdiv <8 x double> %639, %574
  %653 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %651, <8 x double> %652, <8 x double> %638)
  %654 = fdiv <8 x double> %628, %653
  %655 = fcmp ule <8 x double> %654, zeroinitializer
  %656 = select <8 x i1> %655, <8 x double> %639, <8 x double> %654
  %657 = fcmp ule <8 x double> %628, zeroinitializer
  %658 = fcmp ule <8 x double> %638, zeroinitializer
  %659 = or <8 x i1> %657, %658
  %660 = fcmp ogt <8 x double> %656, splat (double 1.000000e-03)
  %661 = select <8 x i1> %660, <8 x double> %656, <8 x double> splat (double 1.000000e-03)
  %662 = select <8 x i1> %659, <8 x double> splat (double 1.000000e+09), <8 x double> %661
  %663 = fcmp olt <8 x double> %603, %662
  %664 = select <8 x i1> %663, <8 x double> %603, <8 x double> %662
  %665 = add nuw nsw i64 %604, 1
  %666 = icmp eq i64 %665, %533
  br i1 %666, label %667, label %602, !llvm.loop !56

667:                                              ; preds = %602, %534
  %668 = phi <8 x double> [ %597, %534 ], [ %664, %602 ]
  %669 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %668)
  %670 = insertelement <8 x double> poison, double %669, i64 0
  %671 = shufflevector <8 x double> %670, <8 x double> poison, <8 x i32> zeroinitializer
  %672 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %673 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %674 = fadd <8 x double> %672, %673
  %675 = fsub <8 x double> %674, %537
  %676 = fmul <8 x double> %671, splat (double 1.050000e+00)
  %677 = fcmp ugt <8 x double> %675, %676
  %678 = select <8 x i1> %677, <8 x double> %671, <8 x double> %675
  %679 = fmul <8 x double> %550, splat (double 0x3FF000010C6F7A0B)
  %680 = fcmp ole <8 x double> %678, %679
  %681 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %682 = fcmp ogt <8 x double> %681, %550
  %683 = select <8 x i1> %682, <8 x double> %681, <8 x double> %550
  %684 = icmp ne <8 x i64> %530, zeroinitializer
  %685 = select <8 x i1> %680, <8 x i1> %684, <8 x i1> zeroinitializer
  %686 = select <8 x i1> %685, <8 x double> %683, <8 x double> %681
  store <8 x double> %686, ptr %160, align 64, !tbaa !26
  %687 = fmul <8 x double> %550, splat (double 2.000000e+00)
  %688 = fcmp uge <8 x double> %678, %687
  %689 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %690 = fcmp une <8 x double> %689, zeroinitializer
  %691 = or <8 x i1> %690, %688
  %692 = fmul <8 x double> %678, splat (double 5.000000e-01)
  %693 = select <8 x i1> %691, <8 x double> %550, <8 x double> %692
  %694 = select <8 x i1> %680, <8 x double> %678, <8 x double> %693
  %695 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %696 = icmp eq <8 x i64> %530, zeroinitializer
  %697 = select <8 x i1> %696, <8 x double> %695, <8 x double> %694
  store <8 x double> %697, ptr %161, align 64, !tbaa !26
  %698 = fdiv <8 x double> %697, %574
  %699 = fdiv <8 x double> splat (double 1.000000e+00), %697
  %700 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %698, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %701 = fadd <8 x double> %698, splat (double 1.000000e+00)
  %702 = fdiv <8 x double> %700, %701
  %703 = fmul <8 x double> %699, %702
  %704 = icmp eq <8 x i64> %579, zeroinitializer
  %705 = select <8 x i1> %704, <8 x double> %703, <8 x double> %699
  %706 = fneg <8 x double> %699
  %707 = fneg <8 x double> %701
  %708 = fmul <8 x double> %699, %707
  %709 = select <8 x i1> %704, <8 x double> %708, <8 x double> %706
  %710 = fmul <8 x double> %698, %698
  %711 = fdiv <8 x double> %710, %701
  %712 = fmul <8 x double> %699, %711
  %713 = select <8 x i1> %704, <8 x double> %712, <8 x double> zeroinitializer
  %714 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %715 = select <8 x i1> %696, <8 x double> %714, <8 x double> %705
  store <8 x double> %715, ptr %163, align 64, !tbaa !26
  %716 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %717 = select <8 x i1> %696, <8 x double> %716, <8 x double> %709
  store <8 x double> %717, ptr %164, align 64, !tbaa !26
  %718 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %719 = select <8 x i1> %696, <8 x double> %718, <8 x double> %713
  store <8 x double> %719, ptr %165, align 64, !tbaa !26
  %720 = select <8 x i1> %704, <8 x double> %698, <8 x double> zeroinitializer
  %721 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %720, <8 x double> %573, <8 x double> %559)
  %722 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %723 = select <8 x i1> %696, <8 x double> %722, <8 x double> %721
  %724 = load <8 x double>, ptr %242, align 64, !tbaa !26
  %725 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %726 = fsub <8 x double> %724, %725
  %727 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %720, <8 x double> %726, <8 x double> %724)
  %728 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %729 = select <8 x i1> %696, <8 x double> %728, <8 x double> %727
  store <8 x double> %729, ptr %241, align 64, !tbaa !26
  %730 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %731 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %732 = fsub <8 x double> %730, %731
  %733 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %720, <8 x double> %732, <8 x double> %730)
  %734 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %735 = select <8 x i1> %696, <8 x double> %734, <8 x double> %733
  store <8 x double> %735, ptr %244, align 64, !tbaa !26
  %736 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %737 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %738 = fsub <8 x double> %736, %737
  %739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %720, <8 x double> %738, <8 x double> %736)
  %740 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %741 = select <8 x i1> %696, <8 x double> %740, <8 x double> %739
  store <8 x double> %741, ptr %247, align 64, !tbaa !26
  %742 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %743 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %744 = fsub <8 x double> %742, %743
  %745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %720, <8 x double> %744, <8 x double> %742)
  %746 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %747 = select <8 x i1> %696, <8 x double> %746, <8 x double> %745
  store <8 x double> %747, ptr %250, align 64, !tbaa !26
  %748 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %749 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %750 = fsub <8 x double> %748, %749
  %751 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %720, <8 x double> %750, <8 x double> %748)
  %752 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %753 = select <8 x i1> %696, <8 x double> %752, <8 x double> %751
  store <8 x double> %753, ptr %253, align 64, !tbaa !26
  %754 = load <8 x i64>, ptr %144, align 64, !tbaa !26
  %755 = icmp eq <8 x i64> %754, zeroinitializer
  %756 = select <8 x i1> %755, <8 x double> zeroinitializer, <8 x double> %561
  %757 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %758 = fsub <8 x double> %756, %757
  %759 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %760 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %567, <8 x double> %759, <8 x double> %566)
  %761 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %565, <8 x double> %760, <8 x double> %569)
  %762 = fdiv <8 x double> %758, %761
  %763 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %764 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %765 = or <8 x i64> %764, %763
  %766 = and <8 x i64> %765, %530
  %767 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %697, <8 x double> %762, <8 x double> %759)
  %768 = icmp eq <8 x i64> %766, zeroinitializer
  %769 = select <8 x i1> %591, <8 x i1> splat (i1 true), <8 x i1> %768
  %770 = select <8 x i1> %769, <8 x double> %723, <8 x double> %767
  store <8 x double> %770, ptr %166, align 64, !tbaa !26
  %771 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %772 = select <8 x i1> %696, <8 x double> %771, <8 x double> %758
  store <8 x double> %772, ptr %167, align 64, !tbaa !26
  %773 = xor <8 x i64> %764, splat (i64 -1)
  %774 = and <8 x i64> %763, %773
  store <8 x i64> %774, ptr %154, align 64, !tbaa !26
  %775 = load i64, ptr %157, align 8, !tbaa !20
  %776 = icmp sgt i64 %775, 0
  br i1 %776, label %777, label %1415

777:                                              ; preds = %667
  %778 = xor <8 x i64> %530, splat (i64 -1)
  br label %779

779:                                              ; preds = %777, %1383
  %780 = phi i64 [ 0, %777 ], [ %1399, %1383 ]
  %781 = load ptr, ptr %130, align 8, !tbaa !28
  %782 = getelementptr inbounds nuw %struct.Piece, ptr %781, i64 %780
  %783 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %784 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %785 = getelementptr inbounds nuw i8, ptr %782, i64 8384
  %786 = load <8 x i64>, ptr %785, align 64, !tbaa !26
  %787 = fdiv <8 x double> %783, %784
  %788 = fdiv <8 x double> splat (double 1.000000e+00), %783
  %789 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %787, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %790 = fadd <8 x double> %787, splat (double 1.000000e+00)
  %791 = fdiv <8 x double> %789, %790
  %792 = fmul <8 x double> %788, %791
  %793 = icmp eq <8 x i64> %786, zeroinitializer
  %794 = select <8 x i1> %793, <8 x double> %792, <8 x double> %788
  %795 = fneg <8 x double> %788
  %796 = fneg <8 x double> %790
  %797 = fmul <8 x double> %788, %796
  %798 = select <8 x i1> %793, <8 x double> %797, <8 x double> %795
  %799 = fmul <8 x double> %787, %787
  %800 = fdiv <8 x double> %799, %790
  %801 = fmul <8 x double> %788, %800
  %802 = select <8 x i1> %793, <8 x double> %801, <8 x double> zeroinitializer
  %803 = getelementptr inbounds nuw i8, ptr %782, i64 5632
  %804 = load <8 x double>, ptr %803, align 64, !tbaa !26
  %805 = select <8 x i1> %696, <8 x double> %804, <8 x double> %794
  store <8 x double> %805, ptr %803, align 64, !tbaa !26
  %806 = getelementptr inbounds nuw i8, ptr %782, i64 5696
  %807 = load <8 x double>, ptr %806, align 64, !tbaa !26
  %808 = select <8 x i1> %696, <8 x double> %807, <8 x double> %798
  store <8 x double> %808, ptr %806, align 64, !tbaa !26
  %809 = getelementptr inbounds nuw i8, ptr %782, i64 5760
  %810 = load <8 x double>, ptr %809, align 64, !tbaa !26
  %811 = select <8 x i1> %696, <8 x double> %810, <8 x double> %802
  store <8 x double> %811, ptr %809, align 64, !tbaa !26
  %812 = getelementptr inbounds nuw i8, ptr %782, i64 5824
  %813 = fdiv <8 x double> splat (double 1.000000e+00), %794
  %814 = load <8 x double>, ptr %812, align 64, !tbaa !26
  %815 = select <8 x i1> %696, <8 x double> %814, <8 x double> %813
  store <8 x double> %815, ptr %812, align 64, !tbaa !26
  %816 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %817 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %818 = fdiv <8 x double> %816, %817
  %819 = select <8 x i1> %793, <8 x double> %818, <8 x double> zeroinitializer
  %820 = getelementptr inbounds nuw i8, ptr %782, i64 2944
  %821 = getelementptr inbounds nuw i8, ptr %782, i64 3840
  %822 = getelementptr inbounds nuw i8, ptr %782, i64 4736
  br label %1402

823:                                              ; preds = %1402
  %824 = getelementptr inbounds nuw i8, ptr %782, i64 6080
  %825 = getelementptr inbounds nuw i8, ptr %782, i64 3520
  %826 = load <8 x double>, ptr %825, align 64, !tbaa !26
  %827 = fcmp ogt <8 x double> %826, zeroinitializer
  %828 = select <8 x i1> %827, <8 x double> %826, <8 x double> zeroinitializer
  %829 = load <8 x double>, ptr %824, align 64, !tbaa !26
  %830 = select <8 x i1> %696, <8 x double> %829, <8 x double> %828
  store <8 x double> %830, ptr %824, align 64, !tbaa !26
  %831 = getelementptr inbounds nuw i8, ptr %782, i64 384
  %832 = load <8 x double>, ptr %831, align 64, !tbaa !26
  %833 = getelementptr inbounds nuw i8, ptr %782, i64 448
  %834 = load <8 x double>, ptr %833, align 64, !tbaa !26
  %835 = getelementptr inbounds nuw i8, ptr %782, i64 512
  %836 = load <8 x double>, ptr %835, align 64, !tbaa !26
  %837 = getelementptr inbounds nuw i8, ptr %782, i64 640
  %838 = load <8 x double>, ptr %837, align 64, !tbaa !26
  %839 = getelementptr inbounds nuw i8, ptr %782, i64 768
  %840 = load <8 x double>, ptr %839, align 64, !tbaa !26
  %841 = getelementptr inbounds nuw i8, ptr %782, i64 832
  %842 = getelementptr inbounds nuw i8, ptr %782, i64 1536
  %843 = load <8 x double>, ptr %842, align 64, !tbaa !26
  %844 = getelementptr inbounds nuw i8, ptr %782, i64 1600
  %845 = getelementptr inbounds nuw i8, ptr %782, i64 4672
  %846 = load <8 x double>, ptr %845, align 64, !tbaa !26
  %847 = fsub <8 x double> %846, %843
  %848 = getelementptr inbounds nuw i8, ptr %782, i64 5568
  %849 = load <8 x double>, ptr %848, align 64, !tbaa !26
  %850 = fsub <8 x double> %849, %843
  %851 = load <8 x double>, ptr %806, align 64, !tbaa !26
  %852 = load <8 x double>, ptr %809, align 64, !tbaa !26
  %853 = fmul <8 x double> %847, %851
  %854 = fmul <8 x double> %850, %852
  %855 = fmul <8 x double> %843, %851
  %856 = fmul <8 x double> %838, %855
  %857 = fmul <8 x double> %843, %852
  %858 = fmul <8 x double> %838, %857
  %859 = getelementptr inbounds nuw i8, ptr %782, i64 8592
  %860 = load ptr, ptr %859, align 16, !tbaa !46
  %861 = getelementptr inbounds nuw i8, ptr %782, i64 8600
  %862 = load ptr, ptr %861, align 8, !tbaa !57
  %863 = getelementptr inbounds nuw i8, ptr %782, i64 8680
  %864 = load ptr, ptr %863, align 8, !tbaa !48
  %865 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %866 = and <8 x i64> %865, %778
  %867 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %866)
  %868 = icmp eq i64 %867, 0
  %869 = getelementptr inbounds nuw i8, ptr %782, i64 8584
  %870 = load ptr, ptr %869, align 8, !tbaa !58
  %871 = getelementptr inbounds nuw i8, ptr %782, i64 8608
  %872 = load ptr, ptr %871, align 32, !tbaa !59
  %873 = load i64, ptr %119, align 16, !tbaa !21
  %874 = icmp sgt i64 %873, 0
  br i1 %874, label %875, label %877

875:                                              ; preds = %823
  %876 = getelementptr inbounds nuw i8, ptr %782, i64 8512
  br label %890

877:                                              ; preds = %925, %823
  %878 = fmul <8 x double> %840, %851
  %879 = fmul <8 x double> %840, %852
  %880 = getelementptr inbounds nuw i8, ptr %782, i64 8760
  %881 = load ptr, ptr %880, align 8, !tbaa !49
  %882 = getelementptr inbounds nuw i8, ptr %782, i64 8768
  %883 = load ptr, ptr %882, align 64, !tbaa !60
  %884 = load i64, ptr %120, align 8, !tbaa !22
  %885 = icmp sgt i64 %884, 0
  br i1 %885, label %886, label %959

886:                                              ; preds = %877
  %887 = getelementptr inbounds nuw i8, ptr %782, i64 8712
  %888 = getelementptr inbounds nuw i8, ptr %782, i64 8720
  %889 = getelementptr inbounds nuw i8, ptr %782, i64 8728
  br label %932

890:                                              ; preds = %875, %925
  %891 = phi i64 [ 0, %875 ], [ %929, %925 ]
  %892 = getelementptr inbounds nuw <8 x double>, ptr %860, i64 %891
  %893 = load <8 x double>, ptr %892, align 64, !tbaa !26
  %894 = getelementptr inbounds nuw <8 x double>, ptr %862, i64 %891
  %895 = load <8 x double>, ptr %894, align 64, !tbaa !26
  %896 = fsub <8 x double> %893, %895
  %897 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %819, <8 x double> %896, <8 x double> %893)
  br i1 %868, label %902, label %898

898:                                              ; preds = %890
  %899 = getelementptr inbounds nuw <8 x double>, ptr %870, i64 %891
  %900 = load <8 x double>, ptr %899, align 64, !tbaa !26
  %901 = select <8 x i1> %696, <8 x double> %900, <8 x double> %897
  br label %902

902:                                              ; preds = %898, %890
  %903 = phi <8 x double> [ %901, %898 ], [ %897, %890 ]
  %904 = getelementptr inbounds nuw <8 x double>, ptr %870, i64 %891
  store <8 x double> %903, ptr %904, align 64, !tbaa !26
  %905 = load i64, ptr %876, align 64, !tbaa !31
  %906 = icmp slt i64 %891, %905
  %907 = getelementptr inbounds nuw <8 x double>, ptr %864, i64 %891
  %908 = load <8 x double>, ptr %907, align 64, !tbaa !26
  br i1 %906, label %909, label %912

909:                                              ; preds = %902
  %910 = fmul <8 x double> %858, %895
  %911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %856, <8 x double> %893, <8 x double> %910)
  br label %925

912:                                              ; preds = %902
  %913 = fmul <8 x double> %836, %893
  %914 = fmul <8 x double> %913, splat (double 0x3FD5555555555555)
  %915 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %834, <8 x double> splat (double 5.000000e-01), <8 x double> %914)
  %916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %893, <8 x double> %915, <8 x double> %832)
  %917 = fmul <8 x double> %893, %916
  %918 = fmul <8 x double> %836, %895
  %919 = fmul <8 x double> %918, splat (double 0x3FD5555555555555)
  %920 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %834, <8 x double> splat (double 5.000000e-01), <8 x double> %919)
  %921 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %895, <8 x double> %920, <8 x double> %832)
  %922 = fmul <8 x double> %895, %921
  %923 = fmul <8 x double> %854, %922
  %924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %853, <8 x double> %917, <8 x double> %923)
  br label %925

925:                                              ; preds = %912, %909
  %926 = phi <8 x double> [ %924, %912 ], [ %911, %909 ]
  %927 = fmul <8 x double> %926, %908
  %928 = getelementptr inbounds nuw <8 x double>, ptr %872, i64 %891
  store <8 x double> %927, ptr %928, align 64, !tbaa !26
  %929 = add nuw nsw i64 %891, 1
  %930 = load i64, ptr %119, align 16, !tbaa !21
  %931 = icmp slt i64 %929, %930
  br i1 %931, label %890, label %877, !llvm.loop !61

932:                                              ; preds = %886, %932
  %933 = phi i64 [ 0, %886 ], [ %934, %932 ]
  %934 = add nuw nsw i64 %933, 1
  %935 = getelementptr inbounds nuw <8 x double>, ptr %881, i64 %934
  %936 = load <8 x double>, ptr %935, align 64, !tbaa !26
  %937 = getelementptr inbounds nuw <8 x double>, ptr %881, i64 %933
  %938 = load <8 x double>, ptr %937, align 64, !tbaa !26
  %939 = fsub <8 x double> %936, %938
  %940 = load ptr, ptr %887, align 8, !tbaa !50
  %941 = getelementptr inbounds nuw <8 x double>, ptr %940, i64 %933
  %942 = load <8 x double>, ptr %941, align 64, !tbaa !26
  %943 = fmul <8 x double> %939, %942
  %944 = getelementptr inbounds nuw <8 x double>, ptr %883, i64 %934
  %945 = load <8 x double>, ptr %944, align 64, !tbaa !26
  %946 = getelementptr inbounds nuw <8 x double>, ptr %883, i64 %933
  %947 = load <8 x double>, ptr %946, align 64, !tbaa !26
  %948 = fsub <8 x double> %945, %947
  %949 = load ptr, ptr %888, align 16, !tbaa !62
  %950 = getelementptr inbounds nuw <8 x double>, ptr %949, i64 %933
  %951 = load <8 x double>, ptr %950, align 64, !tbaa !26
  %952 = fmul <8 x double> %948, %951
  %953 = fmul <8 x double> %879, %952
  %954 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %878, <8 x double> %943, <8 x double> %953)
  %955 = load ptr, ptr %889, align 8, !tbaa !63
  %956 = getelementptr inbounds nuw <8 x double>, ptr %955, i64 %933
  store <8 x double> %954, ptr %956, align 64, !tbaa !26
  %957 = load i64, ptr %120, align 8, !tbaa !22
  %958 = icmp slt i64 %934, %957
  br i1 %958, label %932, label %959, !llvm.loop !64

959:                                              ; preds = %932, %877
  %960 = getelementptr inbounds nuw i8, ptr %782, i64 1664
  %961 = load <8 x double>, ptr %960, align 64, !tbaa !26
  %962 = fcmp ogt <8 x double> %961, zeroinitializer
  %963 = bitcast <8 x i1> %962 to i8
  %964 = icmp eq i8 %963, 0
  br i1 %964, label %965, label %969

965:                                              ; preds = %959
  %966 = getelementptr inbounds nuw i8, ptr %782, i64 7488
  %967 = load <8 x double>, ptr %966, align 64, !tbaa !26
  %968 = select <8 x i1> %696, <8 x double> %967, <8 x double> zeroinitializer
  store <8 x double> %968, ptr %966, align 64, !tbaa !26
  br label %1078

969:                                              ; preds = %959
  %970 = load <8 x double>, ptr %842, align 64, !tbaa !26
  %971 = getelementptr inbounds nuw i8, ptr %782, i64 1728
  %972 = load <8 x double>, ptr %971, align 64, !tbaa !26
  %973 = getelementptr inbounds nuw i8, ptr %782, i64 1856
  %974 = load <8 x double>, ptr %973, align 64, !tbaa !26
  %975 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %976 = fneg <8 x double> %975
  %977 = fdiv <8 x double> %976, %972
  %978 = fcmp ogt <8 x double> %977, splat (double -7.000000e+02)
  %979 = select <8 x i1> %978, <8 x double> %977, <8 x double> splat (double -7.000000e+02)
  %980 = fcmp olt <8 x double> %979, splat (double 7.000000e+02)
  %981 = select <8 x i1> %980, <8 x double> %979, <8 x double> splat (double 7.000000e+02)
  %982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %981, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %983 = fadd <8 x double> %982, splat (double 0xC338000000000000)
  %984 = fneg <8 x double> %983
  %985 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %984, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %981)
  %986 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %984, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %985)
  %987 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %986, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %988 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %987, <8 x double> %986, <8 x double> splat (double 0x3E5AE64567F544E4))
  %989 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %988, <8 x double> %986, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %990 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %989, <8 x double> %986, <8 x double> splat (double 0x3EC71DE3A556C734))
  %991 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %990, <8 x double> %986, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %991, <8 x double> %986, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %993 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %992, <8 x double> %986, <8 x double> splat (double 0x3F56C16C16C16C17))
  %994 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %993, <8 x double> %986, <8 x double> splat (double 0x3F81111111111111))
  %995 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %994, <8 x double> %986, <8 x double> splat (double 0x3FA5555555555555))
  %996 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %995, <8 x double> %986, <8 x double> splat (double 0x3FC5555555555555))
  %997 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %996, <8 x double> %986, <8 x double> splat (double 5.000000e-01))
  %998 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %997, <8 x double> %986, <8 x double> splat (double 1.000000e+00))
  %999 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %998, <8 x double> %986, <8 x double> splat (double 1.000000e+00))
  %1000 = bitcast <8 x double> %982 to <8 x i64>
  %1001 = shl <8 x i64> %1000, splat (i64 52)
  %1002 = bitcast <8 x double> %999 to <8 x i64>
  %1003 = add <8 x i64> %1001, %1002
  %1004 = bitcast <8 x i64> %1003 to <8 x double>
  %1005 = fsub <8 x double> splat (double 1.000000e+00), %1004
  %1006 = load <8 x double>, ptr %845, align 64, !tbaa !26
  %1007 = fsub <8 x double> %1006, %970
  %1008 = load ptr, ptr %869, align 8, !tbaa !58
  %1009 = load ptr, ptr %859, align 16, !tbaa !46
  %1010 = getelementptr inbounds nuw i8, ptr %782, i64 8624
  %1011 = load ptr, ptr %1010, align 16, !tbaa !47
  %1012 = load ptr, ptr %863, align 8, !tbaa !48
  %1013 = getelementptr inbounds nuw i8, ptr %782, i64 8616
  %1014 = load ptr, ptr %1013, align 8, !tbaa !65
  %1015 = getelementptr inbounds nuw i8, ptr %782, i64 8512
  %1016 = load i64, ptr %1015, align 64, !tbaa !31
  %1017 = load i64, ptr %119, align 16, !tbaa !21
  %1018 = icmp slt i64 %1016, %1017
  br i1 %1018, label %1019, label %1023

1019:                                             ; preds = %969
  %1020 = getelementptr inbounds nuw i8, ptr %782, i64 1792
  %1021 = load <8 x double>, ptr %1020, align 64, !tbaa !26
  %1022 = fneg <8 x double> %1021
  br label %1035

1023:                                             ; preds = %1035, %969
  %1024 = phi <8 x double> [ zeroinitializer, %969 ], [ %1066, %1035 ]
  %1025 = phi <8 x double> [ zeroinitializer, %969 ], [ %1074, %1035 ]
  %1026 = getelementptr inbounds nuw i8, ptr %782, i64 3904
  %1027 = load <8 x double>, ptr %1026, align 64, !tbaa !26
  %1028 = fsub <8 x double> %1027, %1006
  %1029 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1024, <8 x double> %1028, <8 x double> %1025)
  %1030 = getelementptr inbounds nuw i8, ptr %782, i64 7488
  %1031 = load <8 x double>, ptr %841, align 64, !tbaa !26
  %1032 = fmul <8 x double> %1031, %1029
  %1033 = load <8 x double>, ptr %1030, align 64, !tbaa !26
  %1034 = select <8 x i1> %696, <8 x double> %1033, <8 x double> %1032
  store <8 x double> %1034, ptr %1030, align 64, !tbaa !26
  br label %1078

1035:                                             ; preds = %1019, %1035
  %1036 = phi <8 x double> [ zeroinitializer, %1019 ], [ %1074, %1035 ]
  %1037 = phi i64 [ %1016, %1019 ], [ %1075, %1035 ]
  %1038 = getelementptr inbounds <8 x double>, ptr %1009, i64 %1037
  %1039 = load <8 x double>, ptr %1038, align 64, !tbaa !26
  %1040 = getelementptr inbounds <8 x double>, ptr %1008, i64 %1037
  %1041 = load <8 x double>, ptr %1040, align 64, !tbaa !26
  %1042 = fadd <8 x double> %1039, %1041
  %1043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1042, <8 x double> splat (double 5.000000e-01), <8 x double> %1022)
  %1044 = fmul <8 x double> %974, %1043
  %1045 = fcmp ogt <8 x double> %1044, splat (double -5.000000e+00)
  %1046 = select <8 x i1> %1045, <8 x double> %1044, <8 x double> splat (double -5.000000e+00)
  %1047 = fcmp olt <8 x double> %1046, splat (double 5.000000e+00)
  %1048 = select <8 x i1> %1047, <8 x double> %1046, <8 x double> splat (double 5.000000e+00)
  %1049 = fmul <8 x double> %1048, %1048
  %1050 = fadd <8 x double> %1049, splat (double 3.780000e+02)
  %1051 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1049, <8 x double> %1050, <8 x double> splat (double 1.732500e+04))
  %1052 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1049, <8 x double> %1051, <8 x double> splat (double 1.351350e+05))
  %1053 = fmul <8 x double> %1048, %1052
  %1054 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1049, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1055 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1049, <8 x double> %1054, <8 x double> splat (double 6.237000e+04))
  %1056 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1049, <8 x double> %1055, <8 x double> splat (double 1.351350e+05))
  %1057 = fdiv <8 x double> %1053, %1056
  %1058 = fadd <8 x double> %1057, splat (double 1.000000e+00)
  %1059 = fmul <8 x double> %961, %1058
  %1060 = getelementptr inbounds <8 x double>, ptr %1011, i64 %1037
  %1061 = load <8 x double>, ptr %1060, align 64, !tbaa !26
  %1062 = fadd <8 x double> %1061, splat (double -1.000000e+00)
  %1063 = fadd <8 x double> %1062, %1059
  %1064 = fcmp ogt <8 x double> %1063, zeroinitializer
  %1065 = select <8 x i1> %1064, <8 x double> %1063, <8 x double> zeroinitializer
  %1066 = fmul <8 x double> %1005, %1065
  %1067 = fsub <8 x double> %1061, %1066
  %1068 = getelementptr inbounds <8 x double>, ptr %1014, i64 %1037
  %1069 = load <8 x double>, ptr %1068, align 64, !tbaa !26
  %1070 = select <8 x i1> %696, <8 x double> %1069, <8 x double> %1067
  store <8 x double> %1070, ptr %1068, align 64, !tbaa !26
  %1071 = getelementptr inbounds <8 x double>, ptr %1012, i64 %1037
  %1072 = load <8 x double>, ptr %1071, align 64, !tbaa !26
  %1073 = fmul <8 x double> %1007, %1072
  %1074 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1066, <8 x double> %1073, <8 x double> %1036)
  %1075 = add nsw i64 %1037, 1
  %1076 = load i64, ptr %119, align 16, !tbaa !21
  %1077 = icmp slt i64 %1075, %1076
  br i1 %1077, label %1035, label %1023, !llvm.loop !66

1078:                                             ; preds = %965, %1023
  %1079 = load <8 x double>, ptr %820, align 64, !tbaa !26
  %1080 = load <8 x double>, ptr %821, align 64, !tbaa !26
  %1081 = fcmp olt <8 x double> %1079, %1080
  %1082 = select <8 x i1> %1081, <8 x double> %1079, <8 x double> %1080
  %1083 = load <8 x double>, ptr %782, align 64, !tbaa !26
  %1084 = fmul <8 x double> %1083, splat (double 3.000000e-01)
  %1085 = fcmp ogt <8 x double> %1082, %1084
  %1086 = select <8 x i1> %1085, <8 x double> %1082, <8 x double> %1084
  %1087 = select <8 x i1> %696, <8 x double> %1079, <8 x double> %1086
  store <8 x double> %1087, ptr %820, align 64, !tbaa !26
  %1088 = getelementptr inbounds nuw i8, ptr %782, i64 3072
  %1089 = load <8 x double>, ptr %1088, align 64, !tbaa !26, !noalias !67
  %1090 = getelementptr inbounds nuw i8, ptr %782, i64 7680
  %1091 = load <8 x double>, ptr %1090, align 64, !tbaa !26, !noalias !67
  %1092 = fmul <8 x double> %1089, %1091
  %1093 = fcmp ogt <8 x double> %1092, zeroinitializer
  %1094 = select <8 x i1> %1093, <8 x double> %1092, <8 x double> zeroinitializer
  %1095 = fcmp uge <8 x double> %1094, splat (double 1.000000e+00)
  %1096 = select <8 x i1> %1095, <8 x double> splat (double 1.000000e+00), <8 x double> %1094
  %1097 = getelementptr inbounds nuw i8, ptr %782, i64 8448
  %1098 = load <8 x i64>, ptr %1097, align 64, !tbaa !26, !noalias !67
  %1099 = load <8 x double>, ptr %168, align 64, !tbaa !26, !noalias !67
  %1100 = getelementptr inbounds nuw i8, ptr %782, i64 3200
  %1101 = load <8 x double>, ptr %1100, align 64, !tbaa !26, !noalias !67
  %1102 = icmp eq <8 x i64> %1098, zeroinitializer
  %1103 = select <8 x i1> %1102, <8 x double> %1101, <8 x double> %1099
  %1104 = getelementptr inbounds nuw i8, ptr %782, i64 3584
  %1105 = load <8 x double>, ptr %1104, align 64, !tbaa !26, !noalias !67
  %1106 = fsub <8 x double> splat (double 1.000000e+00), %1096
  %1107 = getelementptr inbounds nuw i8, ptr %782, i64 1984
  %1108 = load <8 x double>, ptr %1107, align 64, !tbaa !26, !noalias !67
  %1109 = getelementptr inbounds nuw i8, ptr %782, i64 8320
  %1110 = load <8 x i64>, ptr %1109, align 64, !tbaa !26, !noalias !67
  %1111 = fsub <8 x double> %1083, %1087
  %1112 = getelementptr inbounds nuw i8, ptr %782, i64 7744
  %1113 = load <8 x double>, ptr %1112, align 64, !tbaa !26, !noalias !67
  %1114 = fmul <8 x double> %1111, %1113
  %1115 = icmp eq <8 x i64> %1110, zeroinitializer
  %1116 = select <8 x i1> %1115, <8 x double> zeroinitializer, <8 x double> %1114
  %1117 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1106, <8 x double> %1108, <8 x double> %1116)
  %1118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1105, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1119 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1105, <8 x double> %1118, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1120 = fdiv <8 x double> splat (double 1.000000e+00), %1119
  %1121 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1103, <8 x double> %1117, <8 x double> splat (double 1.000000e+00))
  %1122 = fdiv <8 x double> splat (double 1.000000e+00), %1121
  %1123 = load <8 x double>, ptr %169, align 64, !tbaa !26, !noalias !67
  %1124 = load <8 x double>, ptr %166, align 64, !tbaa !26, !noalias !67
  %1125 = select <8 x i1> %1102, <8 x double> %1124, <8 x double> %1123
  %1126 = fsub <8 x double> %1125, %1105
  %1127 = fmul <8 x double> %1126, %1122
  %1128 = fmul <8 x double> %1103, %1127
  %1129 = load <8 x double>, ptr %803, align 64, !tbaa !26, !noalias !67
  %1130 = getelementptr inbounds nuw i8, ptr %782, i64 3264
  %1131 = load <8 x double>, ptr %1130, align 64, !tbaa !26, !noalias !67
  %1132 = load <8 x double>, ptr %806, align 64, !tbaa !26, !noalias !67
  %1133 = getelementptr inbounds nuw i8, ptr %782, i64 4160
  %1134 = load <8 x double>, ptr %1133, align 64, !tbaa !26, !noalias !67
  %1135 = fmul <8 x double> %1132, %1134
  %1136 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1129, <8 x double> %1131, <8 x double> %1135)
  %1137 = load <8 x double>, ptr %809, align 64, !tbaa !26, !noalias !67
  %1138 = getelementptr inbounds nuw i8, ptr %782, i64 5056
  %1139 = load <8 x double>, ptr %1138, align 64, !tbaa !26, !noalias !67
  %1140 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1137, <8 x double> %1139, <8 x double> %1136)
  %1141 = getelementptr inbounds nuw i8, ptr %782, i64 7808
  %1142 = load <8 x double>, ptr %1141, align 64, !tbaa !26, !noalias !67
  %1143 = fmul <8 x double> %1113, %1142
  %1144 = fcmp ule <8 x double> %1096, zeroinitializer
  %1145 = or <8 x i1> %1095, %1144
  %1146 = fmul <8 x double> %1091, %1108
  %1147 = select <8 x i1> %1145, <8 x double> zeroinitializer, <8 x double> %1146
  %1148 = select <8 x i1> %1115, <8 x double> %1147, <8 x double> %1143
  %1149 = fmul <8 x double> %1103, %1128
  %1150 = fmul <8 x double> %1122, %1149
  %1151 = fmul <8 x double> %1120, %1150
  %1152 = fmul <8 x double> %1151, %1148
  %1153 = load <8 x double>, ptr %812, align 64, !tbaa !26, !noalias !67
  %1154 = fmul <8 x double> %1153, %1152
  %1155 = fadd <8 x double> %1154, splat (double 1.000000e+00)
  %1156 = fdiv <8 x double> splat (double 1.000000e+00), %1155
  %1157 = getelementptr inbounds nuw i8, ptr %782, i64 3456
  %1158 = load <8 x double>, ptr %1157, align 64, !tbaa !26, !noalias !67
  %1159 = fsub <8 x double> %1128, %1158
  %1160 = load <8 x double>, ptr %824, align 64, !tbaa !26, !noalias !67
  %1161 = fsub <8 x double> %1140, %1160
  %1162 = fmul <8 x double> %1154, %1161
  %1163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1159, <8 x double> %1120, <8 x double> %1162)
  %1164 = fmul <8 x double> %1163, %1156
  %1165 = getelementptr inbounds nuw i8, ptr %782, i64 6016
  %1166 = load <8 x double>, ptr %1165, align 64, !tbaa !26, !noalias !67
  %1167 = fcmp ule <8 x double> %1166, zeroinitializer
  %1168 = fcmp ule <8 x double> %1164, zeroinitializer
  %1169 = or <8 x i1> %1167, %1168
  %1170 = select <8 x i1> %1169, <8 x double> zeroinitializer, <8 x double> %1164
  %1171 = getelementptr inbounds nuw i8, ptr %782, i64 2176
  %1172 = load <8 x double>, ptr %1171, align 64, !tbaa !26, !noalias !67
  %1173 = fcmp ogt <8 x double> %1172, zeroinitializer
  %1174 = getelementptr inbounds nuw i8, ptr %782, i64 1024
  %1175 = load <8 x double>, ptr %1174, align 64, !tbaa !26, !noalias !67
  %1176 = bitcast <8 x i1> %1173 to i8
  %1177 = icmp eq i8 %1176, 0
  br i1 %1177, label %1190, label %1178

1178:                                             ; preds = %1078
  %1179 = getelementptr inbounds nuw i8, ptr %782, i64 3648
  %1180 = load <8 x double>, ptr %1179, align 64, !tbaa !26, !noalias !67
  %1181 = fadd <8 x double> %1127, %1180
  %1182 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1181)
  %1183 = fcmp ogt <8 x double> %1172, splat (double 1.000000e-09)
  %1184 = select <8 x i1> %1183, <8 x double> %1172, <8 x double> splat (double 1.000000e-09)
  %1185 = fdiv <8 x double> %1182, %1184
  %1186 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1185)
  %1187 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1186)
  %1188 = select <8 x i1> %1173, <8 x double> %1187, <8 x double> splat (double 1.000000e+00)
  %1189 = fmul <8 x double> %1175, %1188
  br label %1190

1190:                                             ; preds = %1078, %1178
  %1191 = phi <8 x double> [ %1189, %1178 ], [ %1175, %1078 ]
  %1192 = getelementptr inbounds nuw i8, ptr %782, i64 4096
  %1193 = load <8 x double>, ptr %1192, align 64, !tbaa !26, !noalias !67
  %1194 = getelementptr inbounds nuw i8, ptr %782, i64 4992
  %1195 = load <8 x double>, ptr %1194, align 64, !tbaa !26, !noalias !67
  %1196 = fmul <8 x double> %1137, %1195
  %1197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1132, <8 x double> %1193, <8 x double> %1196)
  %1198 = getelementptr inbounds nuw i8, ptr %782, i64 1216
  %1199 = load <8 x double>, ptr %1198, align 64, !tbaa !26, !noalias !67
  %1200 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1199, <8 x double> %1129, <8 x double> splat (double 1.000000e+00))
  %1201 = fdiv <8 x double> splat (double 1.000000e+00), %1200
  %1202 = fmul <8 x double> %1122, %1127
  %1203 = fmul <8 x double> %1120, %1202
  %1204 = fmul <8 x double> %1203, %1156
  %1205 = select <8 x i1> %1169, <8 x double> zeroinitializer, <8 x double> %1204
  %1206 = getelementptr inbounds nuw i8, ptr %782, i64 1088
  %1207 = load <8 x double>, ptr %1206, align 64, !tbaa !26, !noalias !67
  %1208 = fmul <8 x double> %1191, splat (double 2.500000e-01)
  %1209 = fmul <8 x double> %1117, %1208
  %1210 = fneg <8 x double> %1122
  %1211 = fmul <8 x double> %1209, %1210
  %1212 = select <8 x i1> %1173, <8 x double> %1211, <8 x double> splat (double -0.000000e+00)
  %1213 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1207, <8 x double> %1205, <8 x double> %1212)
  %1214 = fadd <8 x double> %1160, %1170
  %1215 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1207, <8 x double> %1214, <8 x double> %1191)
  %1216 = fneg <8 x double> %1199
  %1217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1216, <8 x double> %1197, <8 x double> %1215)
  %1218 = fneg <8 x double> %1103
  %1219 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1201, <8 x double> %1217, <8 x double> %1218)
  %1220 = fmul <8 x double> %1201, %1213
  %1221 = fcmp olt <8 x double> %1220, splat (double 8.000000e-01)
  %1222 = select <8 x i1> %1221, <8 x double> %1220, <8 x double> splat (double 8.000000e-01)
  %1223 = fsub <8 x double> splat (double 1.000000e+00), %1222
  %1224 = fdiv <8 x double> %1219, %1223
  %1225 = fadd <8 x double> %1103, %1224
  %1226 = getelementptr inbounds nuw i8, ptr %782, i64 1152
  %1227 = load <8 x double>, ptr %1226, align 64, !tbaa !26, !noalias !67
  %1228 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1216, <8 x double> %1197, <8 x double> %1227)
  %1229 = fmul <8 x double> %1201, %1228
  %1230 = fcmp olt <8 x double> %1225, %1229
  %1231 = select <8 x i1> %1230, <8 x double> %1225, <8 x double> %1229
  %1232 = select <8 x i1> %1102, <8 x double> %1231, <8 x double> %1099
  %1233 = fsub <8 x double> %1232, %1103
  %1234 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1205, <8 x double> %1233, <8 x double> %1170)
  %1235 = fcmp ogt <8 x double> %1234, zeroinitializer
  %1236 = select <8 x i1> %1235, <8 x double> %1234, <8 x double> zeroinitializer
  %1237 = select <8 x i1> %696, <8 x double> %1101, <8 x double> %1232
  store <8 x double> %1237, ptr %1100, align 64, !tbaa !26
  %1238 = select <8 x i1> %696, <8 x double> %1166, <8 x double> %1236
  store <8 x double> %1238, ptr %1165, align 64, !tbaa !26
  %1239 = fadd <8 x double> %1160, %1238
  %1240 = fneg <8 x double> %1132
  %1241 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1134, <8 x double> %1239)
  %1242 = fneg <8 x double> %1137
  %1243 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1139, <8 x double> %1241)
  %1244 = fmul <8 x double> %1153, %1243
  %1245 = load <8 x double>, ptr %844, align 64, !tbaa !26, !noalias !70
  %1246 = fsub <8 x double> %1245, %1244
  %1247 = getelementptr inbounds nuw i8, ptr %782, i64 4032
  %1248 = load <8 x double>, ptr %1247, align 64, !tbaa !26, !noalias !70
  %1249 = getelementptr inbounds nuw i8, ptr %782, i64 7488
  %1250 = load <8 x double>, ptr %1249, align 64, !tbaa !26, !noalias !70
  %1251 = fsub <8 x double> %1248, %1250
  %1252 = getelementptr inbounds nuw i8, ptr %782, i64 3904
  %1253 = load <8 x double>, ptr %1252, align 64, !tbaa !26, !noalias !70
  %1254 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1110)
  %1255 = icmp eq i64 %1254, 0
  br i1 %1255, label %1383, label %1256

1256:                                             ; preds = %1190
  %1257 = fcmp ogt <8 x double> %1251, %1246
  %1258 = getelementptr inbounds nuw i8, ptr %782, i64 7616
  %1259 = load <8 x double>, ptr %1258, align 64, !tbaa !26, !noalias !70
  %1260 = fcmp oeq <8 x double> %1259, zeroinitializer
  %1261 = select <8 x i1> %1260, <8 x i1> %1257, <8 x i1> zeroinitializer
  %1262 = select <8 x i1> %1261, <8 x i64> %1110, <8 x i64> zeroinitializer
  %1263 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1262)
  %1264 = icmp eq i64 %1263, 0
  br i1 %1264, label %1333, label %1265

1265:                                             ; preds = %1256
  %1266 = fsub <8 x double> %1251, %1246
  %1267 = fmul <8 x double> %1142, %1266
  %1268 = getelementptr inbounds nuw i8, ptr %782, i64 8616
  %1269 = load ptr, ptr %1268, align 8, !tbaa !65, !noalias !70
  %1270 = load i64, ptr %119, align 16, !tbaa !21, !noalias !70
  %1271 = add nsw i64 %1270, -1
  %1272 = getelementptr inbounds <8 x double>, ptr %1269, i64 %1271
  %1273 = load <8 x double>, ptr %1272, align 64, !tbaa !26, !noalias !70
  %1274 = icmp sgt i64 %1270, 1
  br i1 %1274, label %1275, label %1325

1275:                                             ; preds = %1265
  %1276 = getelementptr inbounds nuw i8, ptr %782, i64 8512
  %1277 = load i64, ptr %1276, align 64, !tbaa !31, !noalias !70
  %1278 = getelementptr inbounds nuw i8, ptr %782, i64 8672
  br label %1279

1279:                                             ; preds = %1275, %1322
  %1280 = phi <8 x double> [ %1253, %1275 ], [ %1317, %1322 ]
  %1281 = phi i64 [ %1271, %1275 ], [ %1323, %1322 ]
  %1282 = phi <8 x double> [ %1273, %1275 ], [ %1305, %1322 ]
  %1283 = phi <8 x i64> [ %1262, %1275 ], [ %1309, %1322 ]
  %1284 = phi <8 x double> [ %1267, %1275 ], [ %1316, %1322 ]
  %1285 = icmp slt i64 %1281, %1277
  br i1 %1285, label %1286, label %1292

1286:                                             ; preds = %1279
  %1287 = load ptr, ptr %1278, align 32, !tbaa !73, !noalias !70
  %1288 = getelementptr inbounds nuw <8 x double>, ptr %1287, i64 %1281
  %1289 = load <8 x double>, ptr %1288, align 64, !tbaa !26, !noalias !70
  %1290 = load <8 x double>, ptr %842, align 64, !tbaa !26, !noalias !70
  %1291 = fmul <8 x double> %1289, %1290
  br label %1300

1292:                                             ; preds = %1279
  %1293 = load <8 x double>, ptr %845, align 64, !tbaa !26, !noalias !70
  %1294 = load <8 x double>, ptr %842, align 64, !tbaa !26, !noalias !70
  %1295 = load ptr, ptr %1278, align 32, !tbaa !73, !noalias !70
  %1296 = getelementptr inbounds nuw <8 x double>, ptr %1295, i64 %1281
  %1297 = load <8 x double>, ptr %1296, align 64, !tbaa !26, !noalias !70
  %1298 = fsub <8 x double> %1293, %1294
  %1299 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1297, <8 x double> %1298, <8 x double> %1294)
  br label %1300

1300:                                             ; preds = %1286, %1292
  %1301 = phi <8 x double> [ %1291, %1286 ], [ %1299, %1292 ]
  %1302 = getelementptr inbounds nuw <8 x double>, ptr %1269, i64 %1281
  %1303 = load <8 x double>, ptr %1302, align 64, !tbaa !26, !noalias !70
  %1304 = icmp eq <8 x i64> %1283, zeroinitializer
  %1305 = select <8 x i1> %1304, <8 x double> %1282, <8 x double> %1303
  %1306 = fsub <8 x double> %1280, %1301
  %1307 = fmul <8 x double> %1306, %1305
  %1308 = fcmp olt <8 x double> %1307, %1284
  %1309 = select <8 x i1> %1308, <8 x i64> %1283, <8 x i64> zeroinitializer
  %1310 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1309)
  %1311 = icmp eq i64 %1310, 0
  br i1 %1311, label %1325, label %1312

1312:                                             ; preds = %1300
  %1313 = fneg <8 x double> %1305
  %1314 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1313, <8 x double> %1306, <8 x double> %1284)
  %1315 = icmp eq <8 x i64> %1309, zeroinitializer
  %1316 = select <8 x i1> %1315, <8 x double> %1284, <8 x double> %1314
  %1317 = select <8 x i1> %1315, <8 x double> %1280, <8 x double> %1301
  %1318 = icmp eq i64 %1281, 1
  br i1 %1318, label %1319, label %1322

1319:                                             ; preds = %1312
  %1320 = load <8 x double>, ptr %1269, align 64, !tbaa !26, !noalias !70
  %1321 = select <8 x i1> %1315, <8 x double> %1305, <8 x double> %1320
  br label %1325

1322:                                             ; preds = %1312
  %1323 = add nsw i64 %1281, -1
  %1324 = icmp sgt i64 %1281, 1
  br i1 %1324, label %1279, label %1325, !llvm.loop !74

1325:                                             ; preds = %1322, %1300, %1319, %1265
  %1326 = phi <8 x double> [ %1267, %1265 ], [ %1316, %1319 ], [ %1284, %1300 ], [ %1316, %1322 ]
  %1327 = phi <8 x double> [ %1253, %1265 ], [ %1317, %1319 ], [ %1280, %1300 ], [ %1317, %1322 ]
  %1328 = phi <8 x double> [ %1273, %1265 ], [ %1321, %1319 ], [ %1305, %1300 ], [ %1305, %1322 ]
  %1329 = fdiv <8 x double> %1326, %1328
  %1330 = fsub <8 x double> %1327, %1329
  %1331 = icmp eq <8 x i64> %1262, zeroinitializer
  %1332 = select <8 x i1> %1331, <8 x double> %1253, <8 x double> %1330
  br label %1333

1333:                                             ; preds = %1325, %1256
  %1334 = phi <8 x double> [ %1332, %1325 ], [ %1253, %1256 ]
  %1335 = getelementptr inbounds nuw i8, ptr %782, i64 2624
  %1336 = load <8 x double>, ptr %1335, align 64, !tbaa !26, !noalias !70
  %1337 = getelementptr inbounds nuw i8, ptr %782, i64 2688
  %1338 = load <8 x double>, ptr %1337, align 64, !tbaa !26, !noalias !70
  %1339 = getelementptr inbounds nuw i8, ptr %782, i64 2752
  %1340 = load <8 x double>, ptr %1339, align 64, !tbaa !26, !noalias !70
  %1341 = getelementptr inbounds nuw i8, ptr %782, i64 2560
  %1342 = load <8 x double>, ptr %1341, align 64, !tbaa !26, !noalias !70
  %1343 = fmul <8 x double> %1083, splat (double 5.000000e-04)
  br label %1344

1344:                                             ; preds = %1333, %1344
  %1345 = phi <8 x i64> [ splat (i64 -1), %1333 ], [ %1367, %1344 ]
  %1346 = phi i32 [ 0, %1333 ], [ %1368, %1344 ]
  %1347 = phi <8 x double> [ %1087, %1333 ], [ %1364, %1344 ]
  %1348 = fmul <8 x double> %1347, splat (double 3.000000e+00)
  %1349 = fmul <8 x double> %1348, %1340
  %1350 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1338, <8 x double> splat (double 2.000000e+00), <8 x double> %1349)
  %1351 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1347, <8 x double> %1350, <8 x double> %1336)
  %1352 = fdiv <8 x double> splat (double 1.000000e+00), %1351
  %1353 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1347, <8 x double> %1340, <8 x double> %1338)
  %1354 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1347, <8 x double> %1353, <8 x double> %1336)
  %1355 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1347, <8 x double> %1354, <8 x double> %1342)
  %1356 = fsub <8 x double> %1355, %1334
  %1357 = fmul <8 x double> %1356, %1352
  %1358 = fmul <8 x double> %1357, %1357
  %1359 = fmul <8 x double> %1352, %1358
  %1360 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1348, <8 x double> %1340, <8 x double> %1338)
  %1361 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1359, <8 x double> %1360, <8 x double> %1357)
  %1362 = fsub <8 x double> %1347, %1361
  %1363 = icmp eq <8 x i64> %1345, zeroinitializer
  %1364 = select <8 x i1> %1363, <8 x double> %1347, <8 x double> %1362
  %1365 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1361)
  %1366 = fcmp oge <8 x double> %1365, %1343
  %1367 = select <8 x i1> %1366, <8 x i64> %1345, <8 x i64> zeroinitializer
  %1368 = add nuw nsw i32 %1346, 1
  %1369 = icmp samesign ult i32 %1346, 3
  %1370 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1367)
  %1371 = icmp ne i64 %1370, 0
  %1372 = select i1 %1369, i1 %1371, i1 false
  br i1 %1372, label %1344, label %1373, !llvm.loop !75

1373:                                             ; preds = %1344
  %1374 = fmul <8 x double> %1083, splat (double 2.800000e-01)
  %1375 = fcmp ogt <8 x double> %1364, %1374
  %1376 = select <8 x i1> %1375, <8 x double> %1364, <8 x double> %1374
  %1377 = fcmp olt <8 x double> %1376, %1083
  %1378 = select <8 x i1> %1377, <8 x double> %1376, <8 x double> %1083
  %1379 = select <8 x i1> %1115, <8 x double> %1087, <8 x double> %1378
  %1380 = fcmp olt <8 x double> %1251, %1246
  %1381 = select <8 x i1> %1115, <8 x i1> splat (i1 true), <8 x i1> %1380
  %1382 = select <8 x i1> %1381, <8 x double> %1251, <8 x double> %1246
  br label %1383

1383:                                             ; preds = %1190, %1373
  %1384 = phi <8 x double> [ %1382, %1373 ], [ %1251, %1190 ]
  %1385 = phi <8 x double> [ %1379, %1373 ], [ %1087, %1190 ]
  %1386 = phi <8 x double> [ %1334, %1373 ], [ %1253, %1190 ]
  %1387 = fsub <8 x double> %1246, %1384
  %1388 = select <8 x i1> %696, <8 x double> %1131, <8 x double> %1244
  store <8 x double> %1388, ptr %1130, align 64, !tbaa !26
  %1389 = select <8 x i1> %696, <8 x double> %1089, <8 x double> %1387
  store <8 x double> %1389, ptr %1088, align 64, !tbaa !26
  %1390 = getelementptr inbounds nuw i8, ptr %782, i64 3136
  %1391 = load <8 x double>, ptr %1390, align 64, !tbaa !26
  %1392 = select <8 x i1> %696, <8 x double> %1391, <8 x double> %1384
  store <8 x double> %1392, ptr %1390, align 64, !tbaa !26
  %1393 = getelementptr inbounds nuw i8, ptr %782, i64 3008
  %1394 = and <8 x i64> %1110, %530
  %1395 = load <8 x double>, ptr %1393, align 64, !tbaa !26
  %1396 = icmp eq <8 x i64> %1394, zeroinitializer
  %1397 = select <8 x i1> %1396, <8 x double> %1395, <8 x double> %1386
  store <8 x double> %1397, ptr %1393, align 64, !tbaa !26
  %1398 = select <8 x i1> %1396, <8 x double> %1087, <8 x double> %1385
  store <8 x double> %1398, ptr %820, align 64, !tbaa !26
  %1399 = add nuw nsw i64 %780, 1
  %1400 = load i64, ptr %157, align 8, !tbaa !20
  %1401 = icmp slt i64 %1399, %1400
  br i1 %1401, label %779, label %1415, !llvm.loop !76

1402:                                             ; preds = %779, %1402
  %1403 = phi i64 [ 0, %779 ], [ %1413, %1402 ]
  %1404 = getelementptr inbounds nuw [14 x <8 x double>], ptr %820, i64 0, i64 %1403
  %1405 = getelementptr inbounds nuw [14 x <8 x double>], ptr %821, i64 0, i64 %1403
  %1406 = load <8 x double>, ptr %1405, align 64, !tbaa !26
  %1407 = getelementptr inbounds nuw [14 x <8 x double>], ptr %822, i64 0, i64 %1403
  %1408 = load <8 x double>, ptr %1407, align 64, !tbaa !26
  %1409 = fsub <8 x double> %1406, %1408
  %1410 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %819, <8 x double> %1409, <8 x double> %1406)
  %1411 = load <8 x double>, ptr %1404, align 64, !tbaa !26
  %1412 = select <8 x i1> %696, <8 x double> %1411, <8 x double> %1410
  store <8 x double> %1412, ptr %1404, align 64, !tbaa !26
  %1413 = add nuw nsw i64 %1403, 1
  %1414 = icmp eq i64 %1413, 13
  br i1 %1414, label %823, label %1402, !llvm.loop !77

1415:                                             ; preds = %1383, %667
  %1416 = phi i64 [ %775, %667 ], [ %1400, %1383 ]
  %1417 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %1418 = fcmp ogt <8 x double> %1417, zeroinitializer
  %1419 = select <8 x i1> %1418, <8 x i64> %530, <8 x i64> zeroinitializer
  %1420 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1419)
  %1421 = icmp eq i64 %1420, 0
  br i1 %1421, label %1505, label %1422

1422:                                             ; preds = %1415
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1419, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1423 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %1424 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %1425 = fadd <8 x double> %1423, %1424
  store <8 x double> %1425, ptr %9, align 64, !tbaa !26
  %1426 = load ptr, ptr %170, align 8
  %1427 = load ptr, ptr %172, align 8
  %1428 = load ptr, ptr %173, align 8
  br label %1429

1429:                                             ; preds = %1497, %1422
  %1430 = phi i64 [ 0, %1422 ], [ %1498, %1497 ]
  %1431 = getelementptr inbounds nuw i64, ptr %7, i64 %1430
  %1432 = load i64, ptr %1431, align 8, !tbaa !30
  %1433 = icmp eq i64 %1432, 0
  br i1 %1433, label %1497, label %1434

1434:                                             ; preds = %1429
  %1435 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %1430
  %1436 = load i64, ptr %1435, align 8, !tbaa !30
  %1437 = shl nsw i64 %1436, 1
  %1438 = getelementptr inbounds i64, ptr %1426, i64 %1437
  %1439 = load i64, ptr %1438, align 8, !tbaa !30
  %1440 = shl nuw nsw i64 %1430, 1
  %1441 = getelementptr inbounds nuw [16 x i64], ptr %171, i64 0, i64 %1440
  %1442 = getelementptr inbounds i64, ptr %1428, i64 %1437
  %1443 = load i64, ptr %1442, align 8, !tbaa !30
  %1444 = shl nsw i64 %1443, 4
  %1445 = getelementptr inbounds i8, ptr %1427, i64 %1444
  %1446 = getelementptr inbounds nuw double, ptr %9, i64 %1430
  %1447 = load double, ptr %1446, align 8, !tbaa !41
  %1448 = load i64, ptr %1441, align 8, !tbaa !30
  %1449 = getelementptr i8, ptr %1445, i64 -16
  %1450 = icmp sgt i64 %1448, 0
  br i1 %1450, label %1451, label %1460

1451:                                             ; preds = %1434, %1457
  %1452 = phi i64 [ %1458, %1457 ], [ %1448, %1434 ]
  %1453 = shl i64 %1452, 4
  %1454 = getelementptr i8, ptr %1449, i64 %1453
  %1455 = load double, ptr %1454, align 8, !tbaa !41
  %1456 = fcmp ugt double %1447, %1455
  br i1 %1456, label %1460, label %1457

1457:                                             ; preds = %1451
  %1458 = add nsw i64 %1452, -1
  store i64 %1458, ptr %1441, align 8, !tbaa !30
  %1459 = icmp sgt i64 %1452, 1
  br i1 %1459, label %1451, label %1460, !llvm.loop !78

1460:                                             ; preds = %1457, %1451, %1434
  %1461 = phi i64 [ %1448, %1434 ], [ 0, %1457 ], [ %1452, %1451 ]
  %1462 = icmp slt i64 %1461, %1439
  br i1 %1462, label %1463, label %1472

1463:                                             ; preds = %1460, %1469
  %1464 = phi i64 [ %1470, %1469 ], [ %1461, %1460 ]
  %1465 = shl nsw i64 %1464, 4
  %1466 = getelementptr inbounds i8, ptr %1445, i64 %1465
  %1467 = load double, ptr %1466, align 8, !tbaa !41
  %1468 = fcmp ule double %1447, %1467
  br i1 %1468, label %1477, label %1469

1469:                                             ; preds = %1463
  %1470 = add i64 %1464, 1
  store i64 %1470, ptr %1441, align 8, !tbaa !30
  %1471 = icmp eq i64 %1470, %1439
  br i1 %1471, label %1472, label %1463, !llvm.loop !79

1472:                                             ; preds = %1469, %1460
  %1473 = shl i64 %1439, 4
  %1474 = getelementptr i8, ptr %1445, i64 %1473
  %1475 = getelementptr i8, ptr %1474, i64 -8
  %1476 = load double, ptr %1475, align 8, !tbaa !41
  br label %1494

1477:                                             ; preds = %1463
  %1478 = shl nsw i64 %1464, 1
  %1479 = or disjoint i64 %1478, 1
  %1480 = getelementptr inbounds double, ptr %1445, i64 %1479
  %1481 = load double, ptr %1480, align 8, !tbaa !41
  %1482 = icmp sgt i64 %1464, 0
  br i1 %1482, label %1483, label %1494

1483:                                             ; preds = %1477
  %1484 = getelementptr inbounds nuw i8, ptr %1445, i64 %1465
  %1485 = getelementptr i8, ptr %1484, i64 -8
  %1486 = load double, ptr %1485, align 8, !tbaa !41
  %1487 = getelementptr i8, ptr %1484, i64 -16
  %1488 = load double, ptr %1487, align 8, !tbaa !41
  %1489 = fsub double %1447, %1488
  %1490 = fsub double %1467, %1488
  %1491 = fdiv double %1489, %1490
  %1492 = fsub double %1481, %1486
  %1493 = tail call double @llvm.fmuladd.f64(double %1491, double %1492, double %1486)
  br label %1494

1494:                                             ; preds = %1483, %1477, %1472
  %1495 = phi double [ %1493, %1483 ], [ %1481, %1477 ], [ %1476, %1472 ]
  %1496 = getelementptr inbounds nuw double, ptr %8, i64 %1430
  store double %1495, ptr %1496, align 8, !tbaa !41
  br label %1497

1497:                                             ; preds = %1494, %1429
  %1498 = add nuw nsw i64 %1430, 1
  %1499 = icmp eq i64 %1498, 8
  br i1 %1499, label %1500, label %1429, !llvm.loop !80

1500:                                             ; preds = %1497
  %1501 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1502 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %1503 = icmp eq <8 x i64> %1419, zeroinitializer
  %1504 = select <8 x i1> %1503, <8 x double> %1502, <8 x double> %1501
  store <8 x double> %1504, ptr %166, align 64, !tbaa !26
  br label %1505

1505:                                             ; preds = %1415, %1500, %528
  %1506 = phi i64 [ %1416, %1415 ], [ %1416, %1500 ], [ %533, %528 ]
  %1507 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %1508 = icmp eq <8 x i64> %530, zeroinitializer
  %1509 = select <8 x i1> %1508, <8 x double> %1507, <8 x double> zeroinitializer
  store <8 x double> %1509, ptr %174, align 64, !tbaa !26
  %1510 = icmp sgt i64 %1506, 0
  br i1 %1510, label %1513, label %1511

1511:                                             ; preds = %1505
  %1512 = load <8 x double>, ptr %175, align 64, !tbaa !26
  br label %2355

1513:                                             ; preds = %1505
  %1514 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %1515 = xor <8 x i64> %530, splat (i64 -1)
  %1516 = and <8 x i64> %1514, %1515
  %1517 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1516)
  %1518 = icmp eq i64 %1517, 0
  %1519 = icmp eq <8 x i64> %1516, zeroinitializer
  br label %1523

1520:                                             ; preds = %2347
  %1521 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %1522 = icmp sgt i64 %2351, 0
  br i1 %1522, label %2361, label %2355

1523:                                             ; preds = %1513, %2347
  %1524 = phi i64 [ 0, %1513 ], [ %2350, %2347 ]
  %1525 = load ptr, ptr %130, align 8, !tbaa !28
  %1526 = getelementptr inbounds nuw %struct.Piece, ptr %1525, i64 %1524
  br i1 %1518, label %1527, label %1554

1527:                                             ; preds = %1523
  %1528 = getelementptr inbounds nuw i8, ptr %1526, i64 8448
  %1529 = load <8 x i64>, ptr %1528, align 64, !tbaa !26
  %1530 = getelementptr inbounds nuw i8, ptr %1526, i64 3072
  %1531 = load <8 x double>, ptr %1530, align 64, !tbaa !26
  %1532 = getelementptr inbounds nuw i8, ptr %1526, i64 7680
  %1533 = load <8 x double>, ptr %1532, align 64, !tbaa !26
  %1534 = getelementptr inbounds nuw i8, ptr %1526, i64 5696
  %1535 = load <8 x double>, ptr %1534, align 64, !tbaa !26
  %1536 = getelementptr inbounds nuw i8, ptr %1526, i64 5760
  %1537 = load <8 x double>, ptr %1536, align 64, !tbaa !26
  %1538 = getelementptr inbounds nuw i8, ptr %1526, i64 8320
  %1539 = load <8 x i64>, ptr %1538, align 64, !tbaa !26
  %1540 = getelementptr inbounds nuw i8, ptr %1526, i64 1984
  %1541 = load <8 x double>, ptr %1540, align 64, !tbaa !26
  %1542 = load <8 x double>, ptr %1526, align 64, !tbaa !26
  %1543 = getelementptr inbounds nuw i8, ptr %1526, i64 2944
  %1544 = load <8 x double>, ptr %1543, align 64, !tbaa !26
  %1545 = getelementptr inbounds nuw i8, ptr %1526, i64 7744
  %1546 = load <8 x double>, ptr %1545, align 64, !tbaa !26
  %1547 = getelementptr inbounds nuw i8, ptr %1526, i64 5632
  %1548 = load <8 x double>, ptr %1547, align 64, !tbaa !26
  %1549 = getelementptr inbounds nuw i8, ptr %1526, i64 6016
  %1550 = load <8 x double>, ptr %1549, align 64, !tbaa !26
  %1551 = fmul <8 x double> %1531, %1533
  %1552 = fsub <8 x double> %1542, %1544
  %1553 = fmul <8 x double> %1552, %1546
  br label %1709

1554:                                             ; preds = %1523
  %1555 = getelementptr inbounds nuw i8, ptr %1526, i64 3200
  %1556 = getelementptr inbounds nuw i8, ptr %1526, i64 3072
  %1557 = load <8 x double>, ptr %1556, align 64, !tbaa !26, !noalias !81
  %1558 = getelementptr inbounds nuw i8, ptr %1526, i64 7680
  %1559 = load <8 x double>, ptr %1558, align 64, !tbaa !26, !noalias !81
  %1560 = fmul <8 x double> %1557, %1559
  %1561 = fcmp ogt <8 x double> %1560, zeroinitializer
  %1562 = select <8 x i1> %1561, <8 x double> %1560, <8 x double> zeroinitializer
  %1563 = fcmp uge <8 x double> %1562, splat (double 1.000000e+00)
  %1564 = select <8 x i1> %1563, <8 x double> splat (double 1.000000e+00), <8 x double> %1562
  %1565 = getelementptr inbounds nuw i8, ptr %1526, i64 8448
  %1566 = load <8 x i64>, ptr %1565, align 64, !tbaa !26, !noalias !81
  %1567 = load <8 x double>, ptr %168, align 64, !tbaa !26, !noalias !81
  %1568 = load <8 x double>, ptr %1555, align 64, !tbaa !26, !noalias !81
  %1569 = icmp eq <8 x i64> %1566, zeroinitializer
  %1570 = select <8 x i1> %1569, <8 x double> %1568, <8 x double> %1567
  %1571 = getelementptr inbounds nuw i8, ptr %1526, i64 3584
  %1572 = load <8 x double>, ptr %1571, align 64, !tbaa !26, !noalias !81
  %1573 = fsub <8 x double> splat (double 1.000000e+00), %1564
  %1574 = getelementptr inbounds nuw i8, ptr %1526, i64 1984
  %1575 = load <8 x double>, ptr %1574, align 64, !tbaa !26, !noalias !81
  %1576 = getelementptr inbounds nuw i8, ptr %1526, i64 8320
  %1577 = load <8 x i64>, ptr %1576, align 64, !tbaa !26, !noalias !81
  %1578 = load <8 x double>, ptr %1526, align 64, !tbaa !26, !noalias !81
  %1579 = getelementptr inbounds nuw i8, ptr %1526, i64 2944
  %1580 = load <8 x double>, ptr %1579, align 64, !tbaa !26, !noalias !81
  %1581 = fsub <8 x double> %1578, %1580
  %1582 = getelementptr inbounds nuw i8, ptr %1526, i64 7744
  %1583 = load <8 x double>, ptr %1582, align 64, !tbaa !26, !noalias !81
  %1584 = fmul <8 x double> %1581, %1583
  %1585 = icmp eq <8 x i64> %1577, zeroinitializer
  %1586 = select <8 x i1> %1585, <8 x double> zeroinitializer, <8 x double> %1584
  %1587 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1573, <8 x double> %1575, <8 x double> %1586)
  %1588 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1572, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1589 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1572, <8 x double> %1588, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1590 = fdiv <8 x double> splat (double 1.000000e+00), %1589
  %1591 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1570, <8 x double> %1587, <8 x double> splat (double 1.000000e+00))
  %1592 = fdiv <8 x double> splat (double 1.000000e+00), %1591
  %1593 = load <8 x double>, ptr %169, align 64, !tbaa !26, !noalias !81
  %1594 = load <8 x double>, ptr %166, align 64, !tbaa !26, !noalias !81
  %1595 = select <8 x i1> %1569, <8 x double> %1594, <8 x double> %1593
  %1596 = fsub <8 x double> %1595, %1572
  %1597 = fmul <8 x double> %1596, %1592
  %1598 = fmul <8 x double> %1570, %1597
  %1599 = getelementptr inbounds nuw i8, ptr %1526, i64 5632
  %1600 = load <8 x double>, ptr %1599, align 64, !tbaa !26, !noalias !81
  %1601 = getelementptr inbounds nuw i8, ptr %1526, i64 3264
  %1602 = load <8 x double>, ptr %1601, align 64, !tbaa !26, !noalias !81
  %1603 = getelementptr inbounds nuw i8, ptr %1526, i64 5696
  %1604 = load <8 x double>, ptr %1603, align 64, !tbaa !26, !noalias !81
  %1605 = getelementptr inbounds nuw i8, ptr %1526, i64 4160
  %1606 = load <8 x double>, ptr %1605, align 64, !tbaa !26, !noalias !81
  %1607 = fmul <8 x double> %1604, %1606
  %1608 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1600, <8 x double> %1602, <8 x double> %1607)
  %1609 = getelementptr inbounds nuw i8, ptr %1526, i64 5760
  %1610 = load <8 x double>, ptr %1609, align 64, !tbaa !26, !noalias !81
  %1611 = getelementptr inbounds nuw i8, ptr %1526, i64 5056
  %1612 = load <8 x double>, ptr %1611, align 64, !tbaa !26, !noalias !81
  %1613 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1610, <8 x double> %1612, <8 x double> %1608)
  %1614 = getelementptr inbounds nuw i8, ptr %1526, i64 7808
  %1615 = load <8 x double>, ptr %1614, align 64, !tbaa !26, !noalias !81
  %1616 = fmul <8 x double> %1583, %1615
  %1617 = fcmp ule <8 x double> %1564, zeroinitializer
  %1618 = or <8 x i1> %1563, %1617
  %1619 = fmul <8 x double> %1559, %1575
  %1620 = select <8 x i1> %1618, <8 x double> zeroinitializer, <8 x double> %1619
  %1621 = select <8 x i1> %1585, <8 x double> %1620, <8 x double> %1616
  %1622 = fmul <8 x double> %1570, %1598
  %1623 = fmul <8 x double> %1592, %1622
  %1624 = fmul <8 x double> %1590, %1623
  %1625 = fmul <8 x double> %1624, %1621
  %1626 = getelementptr inbounds nuw i8, ptr %1526, i64 5824
  %1627 = load <8 x double>, ptr %1626, align 64, !tbaa !26, !noalias !81
  %1628 = fmul <8 x double> %1627, %1625
  %1629 = fadd <8 x double> %1628, splat (double 1.000000e+00)
  %1630 = fdiv <8 x double> splat (double 1.000000e+00), %1629
  %1631 = getelementptr inbounds nuw i8, ptr %1526, i64 3456
  %1632 = load <8 x double>, ptr %1631, align 64, !tbaa !26, !noalias !81
  %1633 = fsub <8 x double> %1598, %1632
  %1634 = getelementptr inbounds nuw i8, ptr %1526, i64 6080
  %1635 = load <8 x double>, ptr %1634, align 64, !tbaa !26, !noalias !81
  %1636 = fsub <8 x double> %1613, %1635
  %1637 = fmul <8 x double> %1628, %1636
  %1638 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1633, <8 x double> %1590, <8 x double> %1637)
  %1639 = fmul <8 x double> %1638, %1630
  %1640 = getelementptr inbounds nuw i8, ptr %1526, i64 6016
  %1641 = load <8 x double>, ptr %1640, align 64, !tbaa !26, !noalias !81
  %1642 = fcmp ule <8 x double> %1641, zeroinitializer
  %1643 = fcmp ule <8 x double> %1639, zeroinitializer
  %1644 = or <8 x i1> %1642, %1643
  %1645 = select <8 x i1> %1644, <8 x double> zeroinitializer, <8 x double> %1639
  %1646 = getelementptr inbounds nuw i8, ptr %1526, i64 2176
  %1647 = load <8 x double>, ptr %1646, align 64, !tbaa !26, !noalias !81
  %1648 = fcmp ogt <8 x double> %1647, zeroinitializer
  %1649 = getelementptr inbounds nuw i8, ptr %1526, i64 1024
  %1650 = load <8 x double>, ptr %1649, align 64, !tbaa !26, !noalias !81
  %1651 = bitcast <8 x i1> %1648 to i8
  %1652 = icmp eq i8 %1651, 0
  br i1 %1652, label %1665, label %1653

1653:                                             ; preds = %1554
  %1654 = getelementptr inbounds nuw i8, ptr %1526, i64 3648
  %1655 = load <8 x double>, ptr %1654, align 64, !tbaa !26, !noalias !81
  %1656 = fadd <8 x double> %1597, %1655
  %1657 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1656)
  %1658 = fcmp ogt <8 x double> %1647, splat (double 1.000000e-09)
  %1659 = select <8 x i1> %1658, <8 x double> %1647, <8 x double> splat (double 1.000000e-09)
  %1660 = fdiv <8 x double> %1657, %1659
  %1661 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1660)
  %1662 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1661)
  %1663 = select <8 x i1> %1648, <8 x double> %1662, <8 x double> splat (double 1.000000e+00)
  %1664 = fmul <8 x double> %1650, %1663
  br label %1665

1665:                                             ; preds = %1653, %1554
  %1666 = phi <8 x double> [ %1664, %1653 ], [ %1650, %1554 ]
  %1667 = getelementptr inbounds nuw i8, ptr %1526, i64 4096
  %1668 = load <8 x double>, ptr %1667, align 64, !tbaa !26, !noalias !81
  %1669 = getelementptr inbounds nuw i8, ptr %1526, i64 4992
  %1670 = load <8 x double>, ptr %1669, align 64, !tbaa !26, !noalias !81
  %1671 = fmul <8 x double> %1610, %1670
  %1672 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1604, <8 x double> %1668, <8 x double> %1671)
  %1673 = getelementptr inbounds nuw i8, ptr %1526, i64 1216
  %1674 = load <8 x double>, ptr %1673, align 64, !tbaa !26, !noalias !81
  %1675 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1674, <8 x double> %1600, <8 x double> splat (double 1.000000e+00))
  %1676 = fdiv <8 x double> splat (double 1.000000e+00), %1675
  %1677 = fmul <8 x double> %1592, %1597
  %1678 = fmul <8 x double> %1590, %1677
  %1679 = fmul <8 x double> %1678, %1630
  %1680 = select <8 x i1> %1644, <8 x double> zeroinitializer, <8 x double> %1679
  %1681 = getelementptr inbounds nuw i8, ptr %1526, i64 1088
  %1682 = load <8 x double>, ptr %1681, align 64, !tbaa !26, !noalias !81
  %1683 = fmul <8 x double> %1666, splat (double 2.500000e-01)
  %1684 = fmul <8 x double> %1587, %1683
  %1685 = fneg <8 x double> %1592
  %1686 = fmul <8 x double> %1684, %1685
  %1687 = select <8 x i1> %1648, <8 x double> %1686, <8 x double> splat (double -0.000000e+00)
  %1688 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1682, <8 x double> %1680, <8 x double> %1687)
  %1689 = fadd <8 x double> %1635, %1645
  %1690 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1682, <8 x double> %1689, <8 x double> %1666)
  %1691 = fneg <8 x double> %1674
  %1692 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1691, <8 x double> %1672, <8 x double> %1690)
  %1693 = fneg <8 x double> %1570
  %1694 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1676, <8 x double> %1692, <8 x double> %1693)
  %1695 = fmul <8 x double> %1676, %1688
  %1696 = fcmp olt <8 x double> %1695, splat (double 8.000000e-01)
  %1697 = select <8 x i1> %1696, <8 x double> %1695, <8 x double> splat (double 8.000000e-01)
  %1698 = fsub <8 x double> splat (double 1.000000e+00), %1697
  %1699 = fdiv <8 x double> %1694, %1698
  %1700 = fadd <8 x double> %1570, %1699
  %1701 = getelementptr inbounds nuw i8, ptr %1526, i64 1152
  %1702 = load <8 x double>, ptr %1701, align 64, !tbaa !26, !noalias !81
  %1703 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1691, <8 x double> %1672, <8 x double> %1702)
  %1704 = fmul <8 x double> %1676, %1703
  %1705 = fcmp olt <8 x double> %1700, %1704
  %1706 = select <8 x i1> %1705, <8 x double> %1700, <8 x double> %1704
  %1707 = select <8 x i1> %1569, <8 x double> %1706, <8 x double> %1567
  %1708 = select <8 x i1> %1519, <8 x double> %1568, <8 x double> %1707
  store <8 x double> %1708, ptr %1555, align 64, !tbaa !26
  br label %1709

1709:                                             ; preds = %1527, %1665
  %1710 = phi <8 x double> [ %1553, %1527 ], [ %1584, %1665 ]
  %1711 = phi <8 x double> [ %1552, %1527 ], [ %1581, %1665 ]
  %1712 = phi <8 x double> [ %1551, %1527 ], [ %1560, %1665 ]
  %1713 = phi <8 x double> [ %1550, %1527 ], [ %1641, %1665 ]
  %1714 = phi <8 x double> [ %1548, %1527 ], [ %1600, %1665 ]
  %1715 = phi <8 x double> [ %1544, %1527 ], [ %1580, %1665 ]
  %1716 = phi <8 x double> [ %1541, %1527 ], [ %1575, %1665 ]
  %1717 = phi <8 x i64> [ %1539, %1527 ], [ %1577, %1665 ]
  %1718 = phi <8 x double> [ %1537, %1527 ], [ %1610, %1665 ]
  %1719 = phi <8 x double> [ %1535, %1527 ], [ %1604, %1665 ]
  %1720 = phi <8 x i64> [ %1529, %1527 ], [ %1566, %1665 ]
  %1721 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %1722 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %1723 = icmp eq <8 x i64> %1720, zeroinitializer
  %1724 = select <8 x i1> %1723, <8 x double> %1722, <8 x double> %1721
  %1725 = getelementptr inbounds nuw i8, ptr %1526, i64 5888
  store <8 x double> %1724, ptr %1725, align 64, !tbaa !26
  %1726 = fcmp ogt <8 x double> %1712, zeroinitializer
  %1727 = select <8 x i1> %1726, <8 x double> %1712, <8 x double> zeroinitializer
  %1728 = fcmp olt <8 x double> %1727, splat (double 1.000000e+00)
  %1729 = select <8 x i1> %1728, <8 x double> %1727, <8 x double> splat (double 1.000000e+00)
  %1730 = getelementptr inbounds nuw i8, ptr %1526, i64 2112
  %1731 = load <8 x double>, ptr %1730, align 64, !tbaa !26
  %1732 = fmul <8 x double> %1729, splat (double 4.180000e+03)
  %1733 = getelementptr inbounds nuw i8, ptr %1526, i64 896
  %1734 = load <8 x double>, ptr %1733, align 64, !tbaa !26
  %1735 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1732, <8 x double> %1734, <8 x double> %1731)
  %1736 = getelementptr inbounds nuw i8, ptr %1526, i64 5696
  %1737 = getelementptr inbounds nuw i8, ptr %1526, i64 4480
  %1738 = load <8 x double>, ptr %1737, align 64, !tbaa !26
  %1739 = getelementptr inbounds nuw i8, ptr %1526, i64 5760
  %1740 = getelementptr inbounds nuw i8, ptr %1526, i64 5376
  %1741 = load <8 x double>, ptr %1740, align 64, !tbaa !26
  %1742 = fmul <8 x double> %1718, %1741
  %1743 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1719, <8 x double> %1738, <8 x double> %1742)
  %1744 = getelementptr inbounds nuw i8, ptr %1526, i64 8320
  %1745 = fcmp ule <8 x double> %1731, zeroinitializer
  %1746 = getelementptr inbounds nuw i8, ptr %1526, i64 7296
  store <8 x double> %1729, ptr %1746, align 64, !tbaa !26
  %1747 = fsub <8 x double> splat (double 1.000000e+00), %1729
  %1748 = getelementptr inbounds nuw i8, ptr %1526, i64 2944
  %1749 = icmp eq <8 x i64> %1717, zeroinitializer
  %1750 = select <8 x i1> %1749, <8 x double> zeroinitializer, <8 x double> %1710
  %1751 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1747, <8 x double> %1716, <8 x double> %1750)
  %1752 = getelementptr inbounds nuw i8, ptr %1526, i64 8256
  store <8 x double> %1751, ptr %1752, align 64, !tbaa !26
  %1753 = getelementptr inbounds nuw i8, ptr %1526, i64 5632
  %1754 = fmul <8 x double> %1735, %1714
  %1755 = icmp eq <8 x i64> %1717, splat (i64 -1)
  %1756 = select <8 x i1> %1745, <8 x i1> splat (i1 true), <8 x i1> %1755
  %1757 = select <8 x i1> %1756, <8 x double> zeroinitializer, <8 x double> %1754
  %1758 = getelementptr inbounds nuw i8, ptr %1526, i64 7360
  store <8 x double> %1757, ptr %1758, align 64, !tbaa !26
  %1759 = fmul <8 x double> %1735, %1743
  %1760 = select <8 x i1> %1756, <8 x double> zeroinitializer, <8 x double> %1759
  %1761 = getelementptr inbounds nuw i8, ptr %1526, i64 7424
  store <8 x double> %1760, ptr %1761, align 64, !tbaa !26
  %1762 = getelementptr inbounds nuw i8, ptr %1526, i64 7168
  store <8 x double> %1713, ptr %1762, align 64, !tbaa !26
  %1763 = getelementptr inbounds nuw i8, ptr %1526, i64 2560
  %1764 = load <8 x double>, ptr %1763, align 64, !tbaa !26
  %1765 = getelementptr inbounds nuw i8, ptr %1526, i64 2624
  %1766 = load <8 x double>, ptr %1765, align 64, !tbaa !26
  %1767 = getelementptr inbounds nuw i8, ptr %1526, i64 2688
  %1768 = load <8 x double>, ptr %1767, align 64, !tbaa !26
  %1769 = getelementptr inbounds nuw i8, ptr %1526, i64 2752
  %1770 = load <8 x double>, ptr %1769, align 64, !tbaa !26
  %1771 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1770, <8 x double> %1768)
  %1772 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1771, <8 x double> %1766)
  %1773 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1772, <8 x double> %1764)
  %1774 = getelementptr inbounds nuw i8, ptr %1526, i64 3776
  store <8 x double> %1773, ptr %1774, align 64, !tbaa !26
  %1775 = getelementptr inbounds nuw i8, ptr %1526, i64 4672
  %1776 = load <8 x double>, ptr %1775, align 64, !tbaa !26
  %1777 = fmul <8 x double> %1719, %1776
  %1778 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1714, <8 x double> %1773, <8 x double> %1777)
  %1779 = getelementptr inbounds nuw i8, ptr %1526, i64 5568
  %1780 = load <8 x double>, ptr %1779, align 64, !tbaa !26
  %1781 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1718, <8 x double> %1780, <8 x double> %1778)
  %1782 = fmul <8 x double> %1781, splat (double 5.000000e-01)
  %1783 = getelementptr inbounds nuw i8, ptr %1526, i64 7104
  store <8 x double> %1782, ptr %1783, align 64, !tbaa !26
  %1784 = getelementptr inbounds nuw i8, ptr %1526, i64 2304
  %1785 = load <8 x double>, ptr %1784, align 64, !tbaa !26
  %1786 = getelementptr inbounds nuw i8, ptr %1526, i64 2368
  %1787 = load <8 x double>, ptr %1786, align 64, !tbaa !26
  %1788 = getelementptr inbounds nuw i8, ptr %1526, i64 2432
  %1789 = load <8 x double>, ptr %1788, align 64, !tbaa !26
  %1790 = getelementptr inbounds nuw i8, ptr %1526, i64 2496
  %1791 = load <8 x double>, ptr %1790, align 64, !tbaa !26
  %1792 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1791, <8 x double> %1789)
  %1793 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1792, <8 x double> %1787)
  %1794 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1793, <8 x double> %1785)
  %1795 = getelementptr inbounds nuw i8, ptr %1526, i64 7040
  store <8 x double> %1794, ptr %1795, align 64, !tbaa !26
  %1796 = getelementptr inbounds nuw i8, ptr %1526, i64 8512
  %1797 = load i64, ptr %1796, align 64, !tbaa !31
  %1798 = icmp eq i64 %1797, 0
  br i1 %1798, label %1799, label %1808

1799:                                             ; preds = %1709
  %1800 = fdiv <8 x double> %1794, %1715
  %1801 = getelementptr inbounds nuw i8, ptr %1526, i64 6912
  store <8 x double> %1800, ptr %1801, align 64, !tbaa !26
  %1802 = load i64, ptr %119, align 16, !tbaa !21
  %1803 = getelementptr inbounds nuw i8, ptr %1526, i64 8696
  %1804 = load ptr, ptr %1803, align 8, !tbaa !36
  %1805 = getelementptr inbounds <8 x double>, ptr %1804, i64 %1802
  %1806 = load <8 x double>, ptr %1805, align 64, !tbaa !26
  %1807 = fmul <8 x double> %1800, %1806
  br label %1832

1808:                                             ; preds = %1709
  %1809 = getelementptr inbounds nuw i8, ptr %1526, i64 64
  %1810 = load <8 x double>, ptr %1809, align 64, !tbaa !26
  %1811 = fsub <8 x double> %1715, %1810
  %1812 = fdiv <8 x double> splat (double 1.000000e+00), %1811
  %1813 = getelementptr inbounds nuw i8, ptr %1526, i64 6912
  store <8 x double> %1812, ptr %1813, align 64, !tbaa !26
  %1814 = load i64, ptr %119, align 16, !tbaa !21
  %1815 = getelementptr inbounds nuw i8, ptr %1526, i64 8696
  %1816 = load ptr, ptr %1815, align 8, !tbaa !36
  %1817 = shl nsw i64 %1814, 8
  %1818 = getelementptr inbounds i8, ptr %1816, i64 %1817
  %1819 = load <8 x double>, ptr %1818, align 64, !tbaa !26
  %1820 = getelementptr inbounds nuw i8, ptr %1818, i64 64
  %1821 = load <8 x double>, ptr %1820, align 64, !tbaa !26
  %1822 = getelementptr inbounds nuw i8, ptr %1818, i64 128
  %1823 = load <8 x double>, ptr %1822, align 64, !tbaa !26
  %1824 = getelementptr inbounds nuw i8, ptr %1818, i64 192
  %1825 = load <8 x double>, ptr %1824, align 64, !tbaa !26
  %1826 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1825, <8 x double> %1823)
  %1827 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1826, <8 x double> %1821)
  %1828 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1827, <8 x double> %1819)
  %1829 = icmp sgt i64 %1814, %1797
  %1830 = fmul <8 x double> %1812, %1828
  %1831 = select i1 %1829, <8 x double> %1830, <8 x double> %1828
  br label %1832

1832:                                             ; preds = %1799, %1808
  %1833 = phi <8 x double> [ %1800, %1799 ], [ %1812, %1808 ]
  %1834 = phi <8 x double> [ %1807, %1799 ], [ %1831, %1808 ]
  %1835 = getelementptr inbounds nuw i8, ptr %1526, i64 3200
  %1836 = load <8 x double>, ptr %1835, align 64, !tbaa !26
  %1837 = getelementptr inbounds nuw i8, ptr %1526, i64 5952
  %1838 = load <8 x double>, ptr %1837, align 64, !tbaa !26
  %1839 = fcmp ogt <8 x double> %1711, splat (double 0x3D719799812DEA11)
  %1840 = select <8 x i1> %1839, <8 x double> %1711, <8 x double> splat (double 0x3D719799812DEA11)
  %1841 = getelementptr inbounds nuw i8, ptr %1526, i64 704
  %1842 = load <8 x double>, ptr %1841, align 64, !tbaa !26
  %1843 = fdiv <8 x double> %1842, %1840
  %1844 = getelementptr inbounds nuw i8, ptr %1526, i64 6976
  store <8 x double> %1843, ptr %1844, align 64, !tbaa !26
  %1845 = getelementptr inbounds nuw i8, ptr %1526, i64 8584
  %1846 = load ptr, ptr %1845, align 8, !tbaa !58
  %1847 = load i64, ptr %119, align 16, !tbaa !21
  %1848 = getelementptr <8 x double>, ptr %1846, i64 %1847
  %1849 = getelementptr i8, ptr %1848, i64 -64
  %1850 = load <8 x double>, ptr %1849, align 64, !tbaa !26
  %1851 = fadd <8 x double> %1838, %1850
  %1852 = fmul <8 x double> %1851, splat (double 5.000000e-01)
  %1853 = getelementptr inbounds nuw i8, ptr %1526, i64 192
  %1854 = load <8 x double>, ptr %1853, align 64, !tbaa !26
  %1855 = getelementptr inbounds nuw i8, ptr %1526, i64 256
  %1856 = load <8 x double>, ptr %1855, align 64, !tbaa !26
  %1857 = getelementptr inbounds nuw i8, ptr %1526, i64 320
  %1858 = load <8 x double>, ptr %1857, align 64, !tbaa !26
  %1859 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1852, <8 x double> %1858, <8 x double> %1856)
  %1860 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1852, <8 x double> %1859, <8 x double> %1854)
  %1861 = fmul <8 x double> %1834, %1860
  %1862 = fmul <8 x double> %1729, %1861
  %1863 = getelementptr inbounds nuw i8, ptr %1526, i64 2048
  %1864 = load <8 x double>, ptr %1863, align 64, !tbaa !26
  %1865 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1862, <8 x double> %1864, <8 x double> splat (double 1.000000e+00))
  %1866 = fdiv <8 x double> splat (double 1.000000e+00), %1865
  %1867 = select <8 x i1> %1749, <8 x double> %1866, <8 x double> splat (double 1.000000e+00)
  %1868 = getelementptr inbounds nuw i8, ptr %1526, i64 7232
  store <8 x double> %1867, ptr %1868, align 64, !tbaa !26
  %1869 = fmul <8 x double> %1861, %1867
  %1870 = getelementptr inbounds nuw i8, ptr %1526, i64 6400
  store <8 x double> %1869, ptr %1870, align 64, !tbaa !26
  %1871 = fmul <8 x double> %1782, splat (double 2.000000e+00)
  %1872 = getelementptr inbounds nuw i8, ptr %1526, i64 384
  %1873 = load <8 x double>, ptr %1872, align 64, !tbaa !26
  %1874 = getelementptr inbounds nuw i8, ptr %1526, i64 448
  %1875 = load <8 x double>, ptr %1874, align 64, !tbaa !26
  %1876 = getelementptr inbounds nuw i8, ptr %1526, i64 512
  %1877 = load <8 x double>, ptr %1876, align 64, !tbaa !26
  %1878 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1838, <8 x double> %1877, <8 x double> %1875)
  %1879 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1838, <8 x double> %1878, <8 x double> %1873)
  %1880 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1871, <8 x double> %1879, <8 x double> %1869)
  %1881 = getelementptr inbounds nuw i8, ptr %1526, i64 6528
  store <8 x double> %1880, ptr %1881, align 64, !tbaa !26
  %1882 = fmul <8 x double> %1747, %1836
  %1883 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1882, <8 x double> %1716, <8 x double> splat (double 1.000000e+00))
  %1884 = fdiv <8 x double> %1836, %1883
  %1885 = load i64, ptr %120, align 8, !tbaa !22
  %1886 = sitofp i64 %1885 to double
  %1887 = fmul double %1886, 2.000000e+00
  %1888 = insertelement <8 x double> poison, double %1887, i64 0
  %1889 = shufflevector <8 x double> %1888, <8 x double> poison, <8 x i32> zeroinitializer
  %1890 = fmul <8 x double> %1843, %1889
  %1891 = fadd <8 x double> %1884, %1890
  %1892 = fdiv <8 x double> %1884, %1891
  %1893 = fmul <8 x double> %1794, %1890
  %1894 = select <8 x i1> %1749, <8 x double> %1884, <8 x double> %1893
  %1895 = getelementptr inbounds nuw i8, ptr %1526, i64 6464
  store <8 x double> %1894, ptr %1895, align 64, !tbaa !26
  %1896 = fmul <8 x double> %1890, %1892
  %1897 = select <8 x i1> %1749, <8 x double> %1884, <8 x double> %1896
  %1898 = getelementptr inbounds nuw i8, ptr %1526, i64 6592
  store <8 x double> %1897, ptr %1898, align 64, !tbaa !26
  %1899 = select <8 x i1> %1749, <8 x double> splat (double 1.000000e+00), <8 x double> %1892
  %1900 = getelementptr inbounds nuw i8, ptr %1526, i64 6656
  store <8 x double> %1899, ptr %1900, align 64, !tbaa !26
  br i1 %1798, label %2065, label %1901

1901:                                             ; preds = %1832
  %1902 = getelementptr inbounds nuw i8, ptr %1526, i64 576
  %1903 = load <8 x double>, ptr %1902, align 64, !tbaa !26
  %1904 = getelementptr inbounds nuw i8, ptr %1526, i64 640
  %1905 = load <8 x double>, ptr %1904, align 64, !tbaa !26
  %1906 = getelementptr inbounds nuw i8, ptr %1526, i64 1536
  %1907 = load <8 x double>, ptr %1906, align 64, !tbaa !26
  %1908 = load i64, ptr %119, align 16, !tbaa !21
  %1909 = fsub <8 x double> %1773, %1907
  %1910 = fmul <8 x double> %1875, splat (double 5.000000e-01)
  %1911 = fmul <8 x double> %1877, splat (double 0x3FE5555555555555)
  %1912 = getelementptr inbounds nuw i8, ptr %1526, i64 8672
  %1913 = load ptr, ptr %1912, align 32, !tbaa !73
  %1914 = getelementptr inbounds nuw i8, ptr %1526, i64 8680
  %1915 = load ptr, ptr %1914, align 8, !tbaa !48
  %1916 = getelementptr inbounds nuw i8, ptr %1526, i64 8608
  %1917 = load ptr, ptr %1916, align 32, !tbaa !59
  %1918 = getelementptr inbounds nuw i8, ptr %1526, i64 8648
  %1919 = load ptr, ptr %1918, align 8, !tbaa !84
  %1920 = getelementptr inbounds nuw i8, ptr %1526, i64 8656
  %1921 = load ptr, ptr %1920, align 16, !tbaa !85
  %1922 = getelementptr inbounds nuw i8, ptr %1526, i64 8664
  %1923 = load ptr, ptr %1922, align 8, !tbaa !86
  %1924 = getelementptr inbounds nuw i8, ptr %1526, i64 8632
  %1925 = load ptr, ptr %1924, align 8, !tbaa !87
  %1926 = getelementptr inbounds nuw i8, ptr %1526, i64 8640
  %1927 = load ptr, ptr %1926, align 64, !tbaa !88
  %1928 = icmp sgt i64 %1908, 0
  br i1 %1928, label %1929, label %2177

1929:                                             ; preds = %1901
  %1930 = load <8 x double>, ptr %1846, align 64, !tbaa !26
  %1931 = getelementptr inbounds nuw i8, ptr %1526, i64 2880
  %1932 = load <8 x double>, ptr %1931, align 64, !tbaa !26
  %1933 = getelementptr inbounds nuw i8, ptr %1526, i64 2816
  %1934 = load <8 x double>, ptr %1933, align 64, !tbaa !26
  %1935 = getelementptr inbounds nuw i8, ptr %1526, i64 64
  %1936 = load <8 x double>, ptr %1935, align 64, !tbaa !26
  %1937 = fmul <8 x double> %1782, splat (double -2.000000e+00)
  %1938 = fmul <8 x double> %1937, %1838
  %1939 = fmul <8 x double> %1838, %1938
  %1940 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1838, <8 x double> %1911, <8 x double> %1910)
  %1941 = fmul <8 x double> %1939, %1940
  %1942 = getelementptr inbounds nuw i8, ptr %1526, i64 8696
  %1943 = fsub <8 x double> %1715, %1936
  %1944 = fmul <8 x double> %1943, %1932
  %1945 = fdiv <8 x double> %1934, %1903
  br label %1946

1946:                                             ; preds = %1929, %2030
  %1947 = phi <8 x double> [ %1930, %1929 ], [ %2034, %2030 ]
  %1948 = phi <8 x double> [ zeroinitializer, %1929 ], [ %2031, %2030 ]
  %1949 = phi <8 x double> [ zeroinitializer, %1929 ], [ %2032, %2030 ]
  %1950 = phi <8 x double> [ zeroinitializer, %1929 ], [ %2033, %2030 ]
  %1951 = phi <8 x double> [ zeroinitializer, %1929 ], [ %2060, %2030 ]
  %1952 = phi <8 x double> [ zeroinitializer, %1929 ], [ %2062, %2030 ]
  %1953 = phi <8 x double> [ %1905, %1929 ], [ %2035, %2030 ]
  %1954 = phi i64 [ 0, %1929 ], [ %1956, %2030 ]
  %1955 = phi <8 x double> [ zeroinitializer, %1929 ], [ %2036, %2030 ]
  %1956 = add nuw nsw i64 %1954, 1
  %1957 = icmp slt i64 %1956, %1908
  br i1 %1957, label %1958, label %2027

1958:                                             ; preds = %1946
  %1959 = getelementptr inbounds nuw <8 x double>, ptr %1846, i64 %1956
  %1960 = load <8 x double>, ptr %1959, align 64, !tbaa !26
  %1961 = icmp slt i64 %1956, %1797
  br i1 %1961, label %1969, label %1962

1962:                                             ; preds = %1958
  %1963 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1960, <8 x double> %1877, <8 x double> %1875)
  %1964 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1960, <8 x double> %1963, <8 x double> %1873)
  %1965 = fneg <8 x double> %1960
  %1966 = fmul <8 x double> %1960, %1965
  %1967 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1960, <8 x double> %1911, <8 x double> %1910)
  %1968 = fmul <8 x double> %1966, %1967
  br label %1969

1969:                                             ; preds = %1958, %1962
  %1970 = phi <8 x double> [ %1964, %1962 ], [ %1905, %1958 ]
  %1971 = phi <8 x double> [ %1968, %1962 ], [ zeroinitializer, %1958 ]
  %1972 = load i64, ptr %1796, align 64, !tbaa !31
  %1973 = icmp eq i64 %1972, 0
  %1974 = load ptr, ptr %1942, align 8, !tbaa !36
  br i1 %1973, label %1975, label %1979

1975:                                             ; preds = %1969
  %1976 = getelementptr inbounds nuw <8 x double>, ptr %1974, i64 %1956
  %1977 = load <8 x double>, ptr %1976, align 64, !tbaa !26
  %1978 = fmul <8 x double> %1833, %1977
  br label %1995

1979:                                             ; preds = %1969
  %1980 = shl nsw i64 %1956, 8
  %1981 = getelementptr inbounds nuw i8, ptr %1974, i64 %1980
  %1982 = load <8 x double>, ptr %1981, align 64, !tbaa !26
  %1983 = getelementptr inbounds nuw i8, ptr %1981, i64 64
  %1984 = load <8 x double>, ptr %1983, align 64, !tbaa !26
  %1985 = getelementptr inbounds nuw i8, ptr %1981, i64 128
  %1986 = load <8 x double>, ptr %1985, align 64, !tbaa !26
  %1987 = getelementptr inbounds nuw i8, ptr %1981, i64 192
  %1988 = load <8 x double>, ptr %1987, align 64, !tbaa !26
  %1989 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1988, <8 x double> %1986)
  %1990 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1989, <8 x double> %1984)
  %1991 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1715, <8 x double> %1990, <8 x double> %1982)
  %1992 = icmp slt i64 %1954, %1972
  %1993 = fmul <8 x double> %1833, %1991
  %1994 = select i1 %1992, <8 x double> %1991, <8 x double> %1993
  br label %1995

1995:                                             ; preds = %1979, %1975
  %1996 = phi <8 x double> [ %1978, %1975 ], [ %1994, %1979 ]
  %1997 = icmp slt i64 %1954, %1972
  br i1 %1997, label %2004, label %1998

1998:                                             ; preds = %1995
  %1999 = fadd <8 x double> %1947, %1960
  %2000 = fmul <8 x double> %1999, splat (double 5.000000e-01)
  %2001 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2000, <8 x double> %1858, <8 x double> %1856)
  %2002 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2000, <8 x double> %2001, <8 x double> %1854)
  %2003 = fmul <8 x double> %2002, %1996
  br label %2014

2004:                                             ; preds = %1995
  %2005 = icmp slt i64 %1956, %1972
  br i1 %2005, label %2006, label %2008

2006:                                             ; preds = %2004
  %2007 = fmul <8 x double> %1903, %1996
  br label %2014

2008:                                             ; preds = %2004
  %2009 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1960, <8 x double> %1858, <8 x double> %1856)
  %2010 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1960, <8 x double> %2009, <8 x double> %1854)
  %2011 = fdiv <8 x double> %1944, %2010
  %2012 = fadd <8 x double> %1945, %2011
  %2013 = fdiv <8 x double> %1996, %2012
  br label %2014

2014:                                             ; preds = %1998, %2006, %2008
  %2015 = phi <8 x double> [ %2003, %1998 ], [ %2007, %2006 ], [ %2013, %2008 ]
  br i1 %1961, label %2020, label %2016

2016:                                             ; preds = %2014
  %2017 = getelementptr inbounds nuw <8 x double>, ptr %1913, i64 %1956
  %2018 = load <8 x double>, ptr %2017, align 64, !tbaa !26
  %2019 = fmul <8 x double> %1782, %2018
  br label %2020

2020:                                             ; preds = %2014, %2016
  %2021 = phi <8 x double> [ %2019, %2016 ], [ zeroinitializer, %2014 ]
  %2022 = fneg <8 x double> %2021
  %2023 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2022, <8 x double> %1953, <8 x double> %2015)
  %2024 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2021, <8 x double> %1970, <8 x double> %2015)
  %2025 = fadd <8 x double> %1955, %1971
  %2026 = fmul <8 x double> %2025, %2021
  br label %2030

2027:                                             ; preds = %1946
  %2028 = load <8 x double>, ptr %1870, align 64, !tbaa !26
  %2029 = load <8 x double>, ptr %1881, align 64, !tbaa !26
  br label %2030

2030:                                             ; preds = %2027, %2020
  %2031 = phi <8 x double> [ %2023, %2020 ], [ %2028, %2027 ]
  %2032 = phi <8 x double> [ %2024, %2020 ], [ %2029, %2027 ]
  %2033 = phi <8 x double> [ %2026, %2020 ], [ %1941, %2027 ]
  %2034 = phi <8 x double> [ %1960, %2020 ], [ %1947, %2027 ]
  %2035 = phi <8 x double> [ %1970, %2020 ], [ %1953, %2027 ]
  %2036 = phi <8 x double> [ %1971, %2020 ], [ %1955, %2027 ]
  %2037 = getelementptr inbounds nuw <8 x double>, ptr %1915, i64 %1954
  %2038 = load <8 x double>, ptr %2037, align 64, !tbaa !26
  %2039 = icmp slt i64 %1954, %1797
  %2040 = select i1 %2039, <8 x double> %1907, <8 x double> %1909
  %2041 = fmul <8 x double> %1714, %2040
  %2042 = fmul <8 x double> %2041, %2038
  %2043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2042, <8 x double> %1953, <8 x double> %2031)
  %2044 = fadd <8 x double> %1949, %2043
  %2045 = fsub <8 x double> %2033, %1950
  %2046 = fneg <8 x double> %2042
  %2047 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2046, <8 x double> %1955, <8 x double> %2045)
  %2048 = getelementptr inbounds nuw <8 x double>, ptr %1917, i64 %1954
  %2049 = load <8 x double>, ptr %2048, align 64, !tbaa !26
  %2050 = fsub <8 x double> %2047, %2049
  %2051 = fneg <8 x double> %1948
  %2052 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2051, <8 x double> %1952, <8 x double> %2044)
  %2053 = fdiv <8 x double> splat (double 1.000000e+00), %2052
  %2054 = getelementptr inbounds nuw <8 x double>, ptr %1919, i64 %1954
  store <8 x double> %2050, ptr %2054, align 64, !tbaa !26
  %2055 = getelementptr inbounds nuw <8 x double>, ptr %1921, i64 %1954
  store <8 x double> %1948, ptr %2055, align 64, !tbaa !26
  %2056 = fadd <8 x double> %1948, %2032
  %2057 = fsub <8 x double> %2056, %2044
  %2058 = getelementptr inbounds nuw <8 x double>, ptr %1923, i64 %1954
  store <8 x double> %2057, ptr %2058, align 64, !tbaa !26
  %2059 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1948, <8 x double> %1951, <8 x double> %2050)
  %2060 = fmul <8 x double> %2059, %2053
  %2061 = getelementptr inbounds nuw <8 x double>, ptr %1925, i64 %1954
  store <8 x double> %2060, ptr %2061, align 64, !tbaa !26
  %2062 = fmul <8 x double> %2032, %2053
  %2063 = getelementptr inbounds nuw <8 x double>, ptr %1927, i64 %1954
  store <8 x double> %2062, ptr %2063, align 64, !tbaa !26
  %2064 = icmp eq i64 %1956, %1908
  br i1 %2064, label %2177, label %1946, !llvm.loop !89

2065:                                             ; preds = %1832
  %2066 = getelementptr inbounds nuw i8, ptr %1526, i64 1536
  %2067 = load <8 x double>, ptr %2066, align 64, !tbaa !26
  %2068 = load i64, ptr %119, align 16, !tbaa !21
  %2069 = fsub <8 x double> %1773, %2067
  %2070 = fmul <8 x double> %1714, %2069
  %2071 = fmul <8 x double> %1875, splat (double 5.000000e-01)
  %2072 = fmul <8 x double> %1877, splat (double 0x3FE5555555555555)
  %2073 = getelementptr inbounds nuw i8, ptr %1526, i64 8672
  %2074 = load ptr, ptr %2073, align 32, !tbaa !73
  %2075 = getelementptr inbounds nuw i8, ptr %1526, i64 8680
  %2076 = load ptr, ptr %2075, align 8, !tbaa !48
  %2077 = getelementptr inbounds nuw i8, ptr %1526, i64 8608
  %2078 = load ptr, ptr %2077, align 32, !tbaa !59
  %2079 = getelementptr inbounds nuw i8, ptr %1526, i64 8648
  %2080 = load ptr, ptr %2079, align 8, !tbaa !84
  %2081 = getelementptr inbounds nuw i8, ptr %1526, i64 8656
  %2082 = load ptr, ptr %2081, align 16, !tbaa !85
  %2083 = getelementptr inbounds nuw i8, ptr %1526, i64 8664
  %2084 = load ptr, ptr %2083, align 8, !tbaa !86
  %2085 = getelementptr inbounds nuw i8, ptr %1526, i64 8632
  %2086 = load ptr, ptr %2085, align 8, !tbaa !87
  %2087 = getelementptr inbounds nuw i8, ptr %1526, i64 8640
  %2088 = load ptr, ptr %2087, align 64, !tbaa !88
  %2089 = icmp sgt i64 %2068, 0
  br i1 %2089, label %2090, label %2177

2090:                                             ; preds = %2065
  %2091 = load <8 x double>, ptr %1846, align 64, !tbaa !26
  %2092 = fneg <8 x double> %2091
  %2093 = fmul <8 x double> %2091, %2092
  %2094 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2091, <8 x double> %2072, <8 x double> %2071)
  %2095 = fmul <8 x double> %2093, %2094
  %2096 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2091, <8 x double> %1877, <8 x double> %1875)
  %2097 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2091, <8 x double> %2096, <8 x double> %1873)
  %2098 = fmul <8 x double> %1782, splat (double -2.000000e+00)
  %2099 = fmul <8 x double> %2098, %1838
  %2100 = fmul <8 x double> %1838, %2099
  %2101 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1838, <8 x double> %2072, <8 x double> %2071)
  %2102 = fmul <8 x double> %2100, %2101
  %2103 = getelementptr inbounds nuw i8, ptr %1526, i64 8696
  br label %2104

2104:                                             ; preds = %2090, %2145
  %2105 = phi <8 x double> [ %2091, %2090 ], [ %2149, %2145 ]
  %2106 = phi <8 x double> [ zeroinitializer, %2090 ], [ %2146, %2145 ]
  %2107 = phi <8 x double> [ zeroinitializer, %2090 ], [ %2147, %2145 ]
  %2108 = phi <8 x double> [ zeroinitializer, %2090 ], [ %2148, %2145 ]
  %2109 = phi <8 x double> [ zeroinitializer, %2090 ], [ %2172, %2145 ]
  %2110 = phi <8 x double> [ zeroinitializer, %2090 ], [ %2174, %2145 ]
  %2111 = phi <8 x double> [ %2097, %2090 ], [ %2150, %2145 ]
  %2112 = phi i64 [ 0, %2090 ], [ %2114, %2145 ]
  %2113 = phi <8 x double> [ %2095, %2090 ], [ %2151, %2145 ]
  %2114 = add nuw nsw i64 %2112, 1
  %2115 = icmp slt i64 %2114, %2068
  br i1 %2115, label %2116, label %2142

2116:                                             ; preds = %2104
  %2117 = getelementptr inbounds nuw <8 x double>, ptr %1846, i64 %2114
  %2118 = load <8 x double>, ptr %2117, align 64, !tbaa !26
  %2119 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2118, <8 x double> %1877, <8 x double> %1875)
  %2120 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2118, <8 x double> %2119, <8 x double> %1873)
  %2121 = fneg <8 x double> %2118
  %2122 = fmul <8 x double> %2118, %2121
  %2123 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2118, <8 x double> %2072, <8 x double> %2071)
  %2124 = fmul <8 x double> %2122, %2123
  %2125 = fadd <8 x double> %2105, %2118
  %2126 = fmul <8 x double> %2125, splat (double 5.000000e-01)
  %2127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2126, <8 x double> %1858, <8 x double> %1856)
  %2128 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2126, <8 x double> %2127, <8 x double> %1854)
  %2129 = load ptr, ptr %2103, align 8, !tbaa !36
  %2130 = getelementptr inbounds nuw <8 x double>, ptr %2129, i64 %2114
  %2131 = load <8 x double>, ptr %2130, align 64, !tbaa !26
  %2132 = fmul <8 x double> %1833, %2131
  %2133 = fmul <8 x double> %2132, %2128
  %2134 = getelementptr inbounds nuw <8 x double>, ptr %2074, i64 %2114
  %2135 = load <8 x double>, ptr %2134, align 64, !tbaa !26
  %2136 = fmul <8 x double> %1782, %2135
  %2137 = fneg <8 x double> %2136
  %2138 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2137, <8 x double> %2111, <8 x double> %2133)
  %2139 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2136, <8 x double> %2120, <8 x double> %2133)
  %2140 = fadd <8 x double> %2113, %2124
  %2141 = fmul <8 x double> %2140, %2136
  br label %2145

2142:                                             ; preds = %2104
  %2143 = load <8 x double>, ptr %1870, align 64, !tbaa !26
  %2144 = load <8 x double>, ptr %1881, align 64, !tbaa !26
  br label %2145

2145:                                             ; preds = %2142, %2116
  %2146 = phi <8 x double> [ %2138, %2116 ], [ %2143, %2142 ]
  %2147 = phi <8 x double> [ %2139, %2116 ], [ %2144, %2142 ]
  %2148 = phi <8 x double> [ %2141, %2116 ], [ %2102, %2142 ]
  %2149 = phi <8 x double> [ %2118, %2116 ], [ %2105, %2142 ]
  %2150 = phi <8 x double> [ %2120, %2116 ], [ %2111, %2142 ]
  %2151 = phi <8 x double> [ %2124, %2116 ], [ %2113, %2142 ]
  %2152 = getelementptr inbounds nuw <8 x double>, ptr %2076, i64 %2112
  %2153 = load <8 x double>, ptr %2152, align 64, !tbaa !26
  %2154 = fmul <8 x double> %2070, %2153
  %2155 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2154, <8 x double> %2111, <8 x double> %2146)
  %2156 = fadd <8 x double> %2107, %2155
  %2157 = fsub <8 x double> %2148, %2108
  %2158 = fneg <8 x double> %2154
  %2159 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2158, <8 x double> %2113, <8 x double> %2157)
  %2160 = getelementptr inbounds nuw <8 x double>, ptr %2078, i64 %2112
  %2161 = load <8 x double>, ptr %2160, align 64, !tbaa !26
  %2162 = fsub <8 x double> %2159, %2161
  %2163 = fneg <8 x double> %2106
  %2164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2163, <8 x double> %2110, <8 x double> %2156)
  %2165 = fdiv <8 x double> splat (double 1.000000e+00), %2164
  %2166 = getelementptr inbounds nuw <8 x double>, ptr %2080, i64 %2112
  store <8 x double> %2162, ptr %2166, align 64, !tbaa !26
  %2167 = getelementptr inbounds nuw <8 x double>, ptr %2082, i64 %2112
  store <8 x double> %2106, ptr %2167, align 64, !tbaa !26
  %2168 = fadd <8 x double> %2106, %2147
  %2169 = fsub <8 x double> %2168, %2156
  %2170 = getelementptr inbounds nuw <8 x double>, ptr %2084, i64 %2112
  store <8 x double> %2169, ptr %2170, align 64, !tbaa !26
  %2171 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2106, <8 x double> %2109, <8 x double> %2162)
  %2172 = fmul <8 x double> %2171, %2165
  %2173 = getelementptr inbounds nuw <8 x double>, ptr %2086, i64 %2112
  store <8 x double> %2172, ptr %2173, align 64, !tbaa !26
  %2174 = fmul <8 x double> %2147, %2165
  %2175 = getelementptr inbounds nuw <8 x double>, ptr %2088, i64 %2112
  store <8 x double> %2174, ptr %2175, align 64, !tbaa !26
  %2176 = icmp eq i64 %2114, %2068
  br i1 %2176, label %2177, label %2104, !llvm.loop !90

2177:                                             ; preds = %2030, %2145, %1901, %2065
  %2178 = getelementptr inbounds nuw i8, ptr %1526, i64 8128
  store <8 x double> splat (double 1.000000e+09), ptr %2178, align 64, !tbaa !26
  %2179 = getelementptr inbounds nuw i8, ptr %1526, i64 8632
  %2180 = load ptr, ptr %2179, align 8, !tbaa !87
  %2181 = load i64, ptr %119, align 16, !tbaa !21
  %2182 = add nsw i64 %2181, -1
  %2183 = getelementptr inbounds <8 x double>, ptr %2180, i64 %2182
  %2184 = load <8 x double>, ptr %2183, align 64, !tbaa !26
  %2185 = getelementptr inbounds nuw i8, ptr %1526, i64 8640
  %2186 = load ptr, ptr %2185, align 64, !tbaa !88
  %2187 = getelementptr inbounds <8 x double>, ptr %2186, i64 %2182
  %2188 = load <8 x double>, ptr %2187, align 64, !tbaa !26
  %2189 = load <8 x double>, ptr %1870, align 64, !tbaa !26
  %2190 = fmul <8 x double> %2184, %2189
  %2191 = fsub <8 x double> splat (double 1.000000e+00), %2188
  %2192 = fmul <8 x double> %2189, %2191
  %2193 = load <8 x double>, ptr %1895, align 64, !tbaa !26
  %2194 = load <8 x double>, ptr %1725, align 64, !tbaa !26
  %2195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2193, <8 x double> %2194, <8 x double> %2190)
  %2196 = load <8 x double>, ptr %1761, align 64, !tbaa !26
  %2197 = fsub <8 x double> %2195, %2196
  %2198 = fadd <8 x double> %2192, %2193
  %2199 = load <8 x double>, ptr %1758, align 64, !tbaa !26
  %2200 = fadd <8 x double> %2198, %2199
  %2201 = load <8 x i64>, ptr %1744, align 64, !tbaa !26
  %2202 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2201)
  %2203 = icmp eq i64 %2202, 0
  %2204 = load i64, ptr %120, align 8, !tbaa !22
  br i1 %2203, label %2205, label %2220

2205:                                             ; preds = %2177
  %2206 = icmp slt i64 %2204, 0
  br i1 %2206, label %2211, label %2207

2207:                                             ; preds = %2205
  %2208 = getelementptr inbounds nuw i8, ptr %1526, i64 1408
  %2209 = getelementptr inbounds nuw i8, ptr %1526, i64 8752
  %2210 = load <8 x double>, ptr %2208, align 64, !tbaa !26
  br label %2213

2211:                                             ; preds = %2213, %2205
  %2212 = getelementptr inbounds nuw i8, ptr %1526, i64 6208
  store <8 x double> %2197, ptr %2212, align 64, !tbaa !26
  br label %2347

2213:                                             ; preds = %2207, %2213
  %2214 = phi i64 [ 0, %2207 ], [ %2217, %2213 ]
  %2215 = load ptr, ptr %2209, align 16, !tbaa !91
  %2216 = getelementptr inbounds nuw <8 x double>, ptr %2215, i64 %2214
  store <8 x double> %2210, ptr %2216, align 64, !tbaa !26
  %2217 = add nuw nsw i64 %2214, 1
  %2218 = load i64, ptr %120, align 8, !tbaa !22
  %2219 = icmp slt i64 %2214, %2218
  br i1 %2219, label %2213, label %2211, !llvm.loop !92

2220:                                             ; preds = %2177
  %2221 = load <8 x double>, ptr %1748, align 64, !tbaa !26
  %2222 = load <8 x double>, ptr %1762, align 64, !tbaa !26
  %2223 = getelementptr inbounds nuw i8, ptr %1526, i64 1280
  %2224 = load <8 x double>, ptr %2223, align 64, !tbaa !26
  %2225 = fmul <8 x double> %2222, %2224
  %2226 = load <8 x double>, ptr %1526, align 64, !tbaa !26
  %2227 = fsub <8 x double> %2226, %2221
  %2228 = sitofp i64 %2204 to double
  %2229 = insertelement <8 x double> poison, double %2228, i64 0
  %2230 = shufflevector <8 x double> %2229, <8 x double> poison, <8 x i32> zeroinitializer
  %2231 = fdiv <8 x double> %2227, %2230
  %2232 = load <8 x double>, ptr %1898, align 64, !tbaa !26
  %2233 = load <8 x double>, ptr %1900, align 64, !tbaa !26
  %2234 = getelementptr inbounds nuw i8, ptr %1526, i64 1408
  %2235 = load <8 x double>, ptr %2234, align 64, !tbaa !26
  %2236 = getelementptr inbounds nuw i8, ptr %1526, i64 8752
  %2237 = load ptr, ptr %2236, align 16, !tbaa !91
  %2238 = getelementptr inbounds <8 x double>, ptr %2237, i64 %2204
  store <8 x double> %2235, ptr %2238, align 64, !tbaa !26
  %2239 = icmp sgt i64 %2204, 0
  br i1 %2239, label %2240, label %2331

2240:                                             ; preds = %2220
  %2241 = fneg <8 x double> %2225
  %2242 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2241, <8 x double> %2233, <8 x double> %2232)
  %2243 = fsub <8 x double> splat (double 1.000000e+00), %2233
  %2244 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2225, <8 x double> %2243, <8 x double> %2232)
  %2245 = getelementptr inbounds nuw i8, ptr %1526, i64 8760
  %2246 = getelementptr inbounds nuw i8, ptr %1526, i64 8768
  %2247 = getelementptr inbounds nuw i8, ptr %1526, i64 768
  %2248 = fmul <8 x double> %2225, splat (double -5.000000e-01)
  %2249 = getelementptr inbounds nuw i8, ptr %1526, i64 8728
  %2250 = getelementptr inbounds nuw i8, ptr %1526, i64 8736
  %2251 = getelementptr inbounds nuw i8, ptr %1526, i64 8744
  br label %2252

2252:                                             ; preds = %2240, %2306
  %2253 = phi <8 x double> [ %2244, %2240 ], [ %2308, %2306 ]
  %2254 = phi <8 x double> [ %2242, %2240 ], [ %2309, %2306 ]
  %2255 = phi <8 x double> [ %2194, %2240 ], [ %2324, %2306 ]
  %2256 = phi <8 x double> [ zeroinitializer, %2240 ], [ %2327, %2306 ]
  %2257 = phi <8 x double> [ %2235, %2240 ], [ %2270, %2306 ]
  %2258 = phi i64 [ %2204, %2240 ], [ %2259, %2306 ]
  %2259 = add nsw i64 %2258, -1
  %2260 = uitofp nneg i64 %2259 to double
  %2261 = insertelement <8 x double> poison, double %2260, i64 0
  %2262 = shufflevector <8 x double> %2261, <8 x double> poison, <8 x i32> zeroinitializer
  %2263 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2262, <8 x double> %2231, <8 x double> %2221)
  %2264 = load <8 x double>, ptr %1763, align 64, !tbaa !26
  %2265 = load <8 x double>, ptr %1765, align 64, !tbaa !26
  %2266 = load <8 x double>, ptr %1767, align 64, !tbaa !26
  %2267 = load <8 x double>, ptr %1769, align 64, !tbaa !26
  %2268 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2263, <8 x double> %2267, <8 x double> %2266)
  %2269 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2263, <8 x double> %2268, <8 x double> %2265)
  %2270 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2263, <8 x double> %2269, <8 x double> %2264)
  %2271 = load <8 x double>, ptr %1753, align 64, !tbaa !26
  %2272 = load <8 x double>, ptr %1736, align 64, !tbaa !26
  %2273 = load ptr, ptr %2245, align 8, !tbaa !49
  %2274 = getelementptr inbounds nuw <8 x double>, ptr %2273, i64 %2259
  %2275 = load <8 x double>, ptr %2274, align 64, !tbaa !26
  %2276 = fmul <8 x double> %2272, %2275
  %2277 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2271, <8 x double> %2270, <8 x double> %2276)
  %2278 = load <8 x double>, ptr %1739, align 64, !tbaa !26
  %2279 = load ptr, ptr %2246, align 64, !tbaa !60
  %2280 = getelementptr inbounds nuw <8 x double>, ptr %2279, i64 %2259
  %2281 = load <8 x double>, ptr %2280, align 64, !tbaa !26
  %2282 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2278, <8 x double> %2281, <8 x double> %2277)
  %2283 = fmul <8 x double> %2282, splat (double 5.000000e-01)
  %2284 = icmp eq i64 %2258, 1
  br i1 %2284, label %2300, label %2285

2285:                                             ; preds = %2252
  %2286 = load <8 x double>, ptr %2247, align 64, !tbaa !26
  %2287 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2283, <8 x double> %2286, <8 x double> %2248)
  %2288 = load <8 x double>, ptr %1844, align 64, !tbaa !26
  %2289 = fmul <8 x double> %2230, %2288
  %2290 = load <8 x double>, ptr %1784, align 64, !tbaa !26
  %2291 = load <8 x double>, ptr %1786, align 64, !tbaa !26
  %2292 = load <8 x double>, ptr %1788, align 64, !tbaa !26
  %2293 = load <8 x double>, ptr %1790, align 64, !tbaa !26
  %2294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2263, <8 x double> %2293, <8 x double> %2292)
  %2295 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2263, <8 x double> %2294, <8 x double> %2291)
  %2296 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2263, <8 x double> %2295, <8 x double> %2290)
  %2297 = fmul <8 x double> %2289, %2296
  %2298 = fsub <8 x double> %2297, %2287
  %2299 = fadd <8 x double> %2287, %2297
  br label %2306

2300:                                             ; preds = %2252
  %2301 = load <8 x double>, ptr %1895, align 64, !tbaa !26
  %2302 = load <8 x double>, ptr %2247, align 64, !tbaa !26
  %2303 = fmul <8 x double> %2283, splat (double -2.000000e+00)
  %2304 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2303, <8 x double> %2302, <8 x double> %2301)
  %2305 = fadd <8 x double> %2225, %2304
  br label %2306

2306:                                             ; preds = %2300, %2285
  %2307 = phi <8 x double> [ %2286, %2285 ], [ %2302, %2300 ]
  %2308 = phi <8 x double> [ %2298, %2285 ], [ %2305, %2300 ]
  %2309 = phi <8 x double> [ %2299, %2285 ], [ %2301, %2300 ]
  %2310 = fsub <8 x double> %2257, %2270
  %2311 = fmul <8 x double> %2271, %2310
  %2312 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2311, <8 x double> %2307, <8 x double> %2253)
  %2313 = fadd <8 x double> %2309, %2312
  %2314 = fneg <8 x double> %2254
  %2315 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2314, <8 x double> %2256, <8 x double> %2313)
  %2316 = fdiv <8 x double> splat (double 1.000000e+00), %2315
  %2317 = load ptr, ptr %2236, align 16, !tbaa !91
  %2318 = getelementptr inbounds nuw <8 x double>, ptr %2317, i64 %2259
  store <8 x double> %2270, ptr %2318, align 64, !tbaa !26
  %2319 = load ptr, ptr %2249, align 8, !tbaa !63
  %2320 = getelementptr inbounds nuw <8 x double>, ptr %2319, i64 %2259
  %2321 = load <8 x double>, ptr %2320, align 64, !tbaa !26
  %2322 = fneg <8 x double> %2321
  %2323 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2254, <8 x double> %2255, <8 x double> %2322)
  %2324 = fmul <8 x double> %2316, %2323
  %2325 = load ptr, ptr %2250, align 32, !tbaa !93
  %2326 = getelementptr inbounds nuw <8 x double>, ptr %2325, i64 %2259
  store <8 x double> %2324, ptr %2326, align 64, !tbaa !26
  %2327 = fmul <8 x double> %2308, %2316
  %2328 = load ptr, ptr %2251, align 8, !tbaa !94
  %2329 = getelementptr inbounds nuw <8 x double>, ptr %2328, i64 %2259
  store <8 x double> %2327, ptr %2329, align 64, !tbaa !26
  %2330 = icmp samesign ugt i64 %2258, 1
  br i1 %2330, label %2252, label %2331, !llvm.loop !95

2331:                                             ; preds = %2306, %2220
  %2332 = load <8 x i64>, ptr %1744, align 64, !tbaa !26
  %2333 = load <8 x double>, ptr %1895, align 64, !tbaa !26
  %2334 = getelementptr inbounds nuw i8, ptr %1526, i64 8736
  %2335 = load ptr, ptr %2334, align 32, !tbaa !93
  %2336 = load <8 x double>, ptr %2335, align 64, !tbaa !26
  %2337 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2333, <8 x double> %2336, <8 x double> %2190)
  %2338 = icmp eq <8 x i64> %2332, zeroinitializer
  %2339 = select <8 x i1> %2338, <8 x double> %2197, <8 x double> %2337
  %2340 = getelementptr inbounds nuw i8, ptr %1526, i64 6208
  store <8 x double> %2339, ptr %2340, align 64, !tbaa !26
  %2341 = getelementptr inbounds nuw i8, ptr %1526, i64 8744
  %2342 = load ptr, ptr %2341, align 8, !tbaa !94
  %2343 = load <8 x double>, ptr %2342, align 64, !tbaa !26
  %2344 = fsub <8 x double> splat (double 1.000000e+00), %2343
  %2345 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2333, <8 x double> %2344, <8 x double> %2192)
  %2346 = select <8 x i1> %2338, <8 x double> %2200, <8 x double> %2345
  br label %2347

2347:                                             ; preds = %2211, %2331
  %2348 = phi <8 x double> [ %2200, %2211 ], [ %2346, %2331 ]
  %2349 = getelementptr inbounds nuw i8, ptr %1526, i64 6272
  store <8 x double> %2348, ptr %2349, align 64, !tbaa !26
  %2350 = add nuw nsw i64 %1524, 1
  %2351 = load i64, ptr %157, align 8, !tbaa !20
  %2352 = icmp slt i64 %2350, %2351
  br i1 %2352, label %1523, label %1520, !llvm.loop !96

2353:                                             ; preds = %2470
  %2354 = icmp sgt i64 %2471, 0
  br label %2355

2355:                                             ; preds = %2353, %1511, %1520
  %2356 = phi <8 x double> [ %1521, %1520 ], [ %1512, %1511 ], [ %1521, %2353 ]
  %2357 = phi i1 [ false, %1520 ], [ false, %1511 ], [ %2354, %2353 ]
  %2358 = fcmp ogt <8 x double> %2356, zeroinitializer
  %2359 = bitcast <8 x i1> %2358 to i8
  %2360 = icmp eq i8 %2359, 0
  br i1 %2360, label %2557, label %2474

2361:                                             ; preds = %1520, %2470
  %2362 = phi i64 [ %2471, %2470 ], [ %2351, %1520 ]
  %2363 = phi i64 [ %2472, %2470 ], [ 0, %1520 ]
  %2364 = load ptr, ptr %130, align 8, !tbaa !28
  %2365 = getelementptr inbounds nuw %struct.Piece, ptr %2364, i64 %2363
  %2366 = getelementptr inbounds nuw i8, ptr %2365, i64 8448
  %2367 = load <8 x i64>, ptr %2366, align 64, !tbaa !26
  %2368 = getelementptr inbounds nuw i8, ptr %2365, i64 2240
  %2369 = load <8 x double>, ptr %2368, align 64, !tbaa !26
  %2370 = fcmp ogt <8 x double> %2369, zeroinitializer
  %2371 = select <8 x i1> %2370, <8 x i64> %2367, <8 x i64> zeroinitializer
  %2372 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2371)
  %2373 = icmp eq i64 %2372, 0
  br i1 %2373, label %2470, label %2374

2374:                                             ; preds = %2361
  %2375 = load <8 x double>, ptr %2365, align 64, !tbaa !26
  %2376 = getelementptr inbounds nuw i8, ptr %2365, i64 2944
  %2377 = load <8 x double>, ptr %2376, align 64, !tbaa !26
  %2378 = fsub <8 x double> %2375, %2377
  %2379 = getelementptr inbounds nuw i8, ptr %2365, i64 7296
  %2380 = load <8 x double>, ptr %2379, align 64, !tbaa !26
  %2381 = fsub <8 x double> splat (double 1.000000e+00), %2380
  %2382 = getelementptr inbounds nuw i8, ptr %2365, i64 1920
  %2383 = load <8 x double>, ptr %2382, align 64, !tbaa !26
  %2384 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2381, <8 x double> %2383, <8 x double> %2378)
  %2385 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2386 = fdiv <8 x double> splat (double 1.000000e+00), %2385
  %2387 = fcmp ogt <8 x double> %2369, splat (double 1.000000e-30)
  %2388 = select <8 x i1> %2387, <8 x double> %2369, <8 x double> splat (double 1.000000e-30)
  %2389 = fdiv <8 x double> %2384, %2388
  %2390 = fadd <8 x double> %2386, %2389
  %2391 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2392 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2391, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2393 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2391, <8 x double> %2392, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2394 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %2395 = getelementptr inbounds nuw i8, ptr %2365, i64 6208
  %2396 = load <8 x double>, ptr %2395, align 64, !tbaa !26
  %2397 = getelementptr inbounds nuw i8, ptr %2365, i64 6272
  %2398 = load <8 x double>, ptr %2397, align 64, !tbaa !26
  %2399 = fdiv <8 x double> %2396, %2398
  %2400 = fcmp olt <8 x double> %2399, %2391
  %2401 = select <8 x i1> %2400, <8 x double> %2399, <8 x double> %2391
  %2402 = getelementptr inbounds nuw i8, ptr %2365, i64 3584
  %2403 = load <8 x double>, ptr %2402, align 64, !tbaa !26
  %2404 = fcmp olt <8 x double> %2403, %2401
  %2405 = select <8 x i1> %2404, <8 x double> %2403, <8 x double> %2401
  %2406 = fneg <8 x double> %2398
  br label %2410

2407:                                             ; preds = %2410
  %2408 = getelementptr inbounds nuw i8, ptr %2365, i64 6336
  store <8 x double> %2461, ptr %2408, align 64, !tbaa !26
  %2409 = load i64, ptr %157, align 8, !tbaa !20
  br label %2470

2410:                                             ; preds = %2374, %2410
  %2411 = phi <8 x i64> [ %2371, %2374 ], [ %2464, %2410 ]
  %2412 = phi i32 [ 0, %2374 ], [ %2465, %2410 ]
  %2413 = phi <8 x double> [ %2405, %2374 ], [ %2461, %2410 ]
  %2414 = fadd <8 x double> %2413, splat (double 2.731500e+02)
  %2415 = fcmp ogt <8 x double> %2413, zeroinitializer
  %2416 = select <8 x i1> %2415, <8 x double> %2413, <8 x double> zeroinitializer
  %2417 = fadd <8 x double> %2416, splat (double 2.731500e+02)
  %2418 = fadd <8 x double> %2417, splat (double 0xC08451671D164BD4)
  %2419 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2418
  %2420 = fsub <8 x double> %2417, %2419
  %2421 = fadd <8 x double> %2420, splat (double 0x40923C3565924845)
  %2422 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2420, <8 x double> %2421, <8 x double> splat (double 0xC12619EA558539E6))
  %2423 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2420, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2424 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2420, <8 x double> %2423, <8 x double> splat (double 0xC148A99584203885))
  %2425 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2420, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2426 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2420, <8 x double> %2425, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2427 = fmul <8 x double> %2426, splat (double 2.000000e+00)
  %2428 = fmul <8 x double> %2422, splat (double 4.000000e+00)
  %2429 = fneg <8 x double> %2426
  %2430 = fmul <8 x double> %2428, %2429
  %2431 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2424, <8 x double> %2424, <8 x double> %2430)
  %2432 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2431)
  %2433 = fsub <8 x double> %2432, %2424
  %2434 = fdiv <8 x double> %2427, %2433
  %2435 = fmul <8 x double> %2434, %2434
  %2436 = fmul <8 x double> %2435, splat (double 1.000000e+06)
  %2437 = fmul <8 x double> %2435, %2436
  %2438 = fmul <8 x double> %2414, splat (double 4.615260e+02)
  %2439 = fdiv <8 x double> %2437, %2438
  %2440 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2406, <8 x double> %2413, <8 x double> %2396)
  %2441 = fsub <8 x double> %2439, %2394
  %2442 = fcmp ogt <8 x double> %2441, zeroinitializer
  %2443 = select <8 x i1> %2442, <8 x double> %2441, <8 x double> zeroinitializer
  %2444 = fmul <8 x double> %2393, %2443
  %2445 = fdiv <8 x double> %2444, %2390
  %2446 = fsub <8 x double> %2440, %2445
  %2447 = fmul <8 x double> %2393, %2439
  %2448 = fdiv <8 x double> %2393, %2438
  %2449 = fadd <8 x double> %2448, splat (double -1.000000e+00)
  %2450 = fmul <8 x double> %2449, %2447
  %2451 = fdiv <8 x double> %2450, %2414
  %2452 = fdiv <8 x double> %2451, %2390
  %2453 = fcmp ule <8 x double> %2439, %2394
  %2454 = select <8 x i1> %2453, <8 x double> zeroinitializer, <8 x double> %2452
  %2455 = fsub <8 x double> %2406, %2454
  %2456 = fdiv <8 x double> %2446, %2455
  %2457 = fsub <8 x double> %2413, %2456
  %2458 = fcmp olt <8 x double> %2457, %2401
  %2459 = select <8 x i1> %2458, <8 x double> %2457, <8 x double> %2401
  %2460 = icmp eq <8 x i64> %2411, zeroinitializer
  %2461 = select <8 x i1> %2460, <8 x double> %2413, <8 x double> %2459
  %2462 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2456)
  %2463 = fcmp oge <8 x double> %2462, splat (double 1.000000e-05)
  %2464 = select <8 x i1> %2463, <8 x i64> %2411, <8 x i64> zeroinitializer
  %2465 = add nuw nsw i32 %2412, 1
  %2466 = icmp samesign ult i32 %2412, 7
  %2467 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2464)
  %2468 = icmp ne i64 %2467, 0
  %2469 = select i1 %2466, i1 %2468, i1 false
  br i1 %2469, label %2410, label %2407, !llvm.loop !97

2470:                                             ; preds = %2361, %2407
  %2471 = phi i64 [ %2362, %2361 ], [ %2409, %2407 ]
  %2472 = add nuw nsw i64 %2363, 1
  %2473 = icmp slt i64 %2472, %2471
  br i1 %2473, label %2361, label %2353, !llvm.loop !98

2474:                                             ; preds = %2355
  %2475 = sext <8 x i1> %2358 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2475, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %2476 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %2477 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %2478 = fadd <8 x double> %2476, %2477
  store <8 x double> %2478, ptr %6, align 64, !tbaa !26
  %2479 = load ptr, ptr %170, align 8
  %2480 = load ptr, ptr %172, align 8
  %2481 = load ptr, ptr %173, align 8
  br label %2482

2482:                                             ; preds = %2552, %2474
  %2483 = phi i64 [ 0, %2474 ], [ %2553, %2552 ]
  %2484 = getelementptr inbounds nuw i64, ptr %4, i64 %2483
  %2485 = load i64, ptr %2484, align 8, !tbaa !30
  %2486 = icmp eq i64 %2485, 0
  br i1 %2486, label %2552, label %2487

2487:                                             ; preds = %2482
  %2488 = getelementptr inbounds nuw [8 x i64], ptr %121, i64 0, i64 %2483
  %2489 = load i64, ptr %2488, align 8, !tbaa !30
  %2490 = shl nsw i64 %2489, 1
  %2491 = or disjoint i64 %2490, 1
  %2492 = getelementptr inbounds i64, ptr %2479, i64 %2491
  %2493 = load i64, ptr %2492, align 8, !tbaa !30
  %2494 = shl nuw nsw i64 %2483, 1
  %2495 = or disjoint i64 %2494, 1
  %2496 = getelementptr inbounds nuw [16 x i64], ptr %171, i64 0, i64 %2495
  %2497 = getelementptr inbounds i64, ptr %2481, i64 %2491
  %2498 = load i64, ptr %2497, align 8, !tbaa !30
  %2499 = shl nsw i64 %2498, 4
  %2500 = getelementptr inbounds i8, ptr %2480, i64 %2499
  %2501 = getelementptr inbounds nuw double, ptr %6, i64 %2483
  %2502 = load double, ptr %2501, align 8, !tbaa !41
  %2503 = load i64, ptr %2496, align 8, !tbaa !30
  %2504 = getelementptr i8, ptr %2500, i64 -16
  %2505 = icmp sgt i64 %2503, 0
  br i1 %2505, label %2506, label %2515

2506:                                             ; preds = %2487, %2512
  %2507 = phi i64 [ %2513, %2512 ], [ %2503, %2487 ]
  %2508 = shl i64 %2507, 4
  %2509 = getelementptr i8, ptr %2504, i64 %2508
  %2510 = load double, ptr %2509, align 8, !tbaa !41
  %2511 = fcmp ugt double %2502, %2510
  br i1 %2511, label %2515, label %2512

2512:                                             ; preds = %2506
  %2513 = add nsw i64 %2507, -1
  store i64 %2513, ptr %2496, align 8, !tbaa !30
  %2514 = icmp sgt i64 %2507, 1
  br i1 %2514, label %2506, label %2515, !llvm.loop !78

2515:                                             ; preds = %2512, %2506, %2487
  %2516 = phi i64 [ %2503, %2487 ], [ 0, %2512 ], [ %2507, %2506 ]
  %2517 = icmp slt i64 %2516, %2493
  br i1 %2517, label %2518, label %2527

2518:                                             ; preds = %2515, %2524
  %2519 = phi i64 [ %2525, %2524 ], [ %2516, %2515 ]
  %2520 = shl nsw i64 %2519, 4
  %2521 = getelementptr inbounds i8, ptr %2500, i64 %2520
  %2522 = load double, ptr %2521, align 8, !tbaa !41
  %2523 = fcmp ule double %2502, %2522
  br i1 %2523, label %2532, label %2524

2524:                                             ; preds = %2518
  %2525 = add i64 %2519, 1
  store i64 %2525, ptr %2496, align 8, !tbaa !30
  %2526 = icmp eq i64 %2525, %2493
  br i1 %2526, label %2527, label %2518, !llvm.loop !79

2527:                                             ; preds = %2524, %2515
  %2528 = shl i64 %2493, 4
  %2529 = getelementptr i8, ptr %2500, i64 %2528
  %2530 = getelementptr i8, ptr %2529, i64 -8
  %2531 = load double, ptr %2530, align 8, !tbaa !41
  br label %2549

2532:                                             ; preds = %2518
  %2533 = shl nsw i64 %2519, 1
  %2534 = or disjoint i64 %2533, 1
  %2535 = getelementptr inbounds double, ptr %2500, i64 %2534
  %2536 = load double, ptr %2535, align 8, !tbaa !41
  %2537 = icmp sgt i64 %2519, 0
  br i1 %2537, label %2538, label %2549

2538:                                             ; preds = %2532
  %2539 = getelementptr inbounds nuw i8, ptr %2500, i64 %2520
  %2540 = getelementptr i8, ptr %2539, i64 -8
  %2541 = load double, ptr %2540, align 8, !tbaa !41
  %2542 = getelementptr i8, ptr %2539, i64 -16
  %2543 = load double, ptr %2542, align 8, !tbaa !41
  %2544 = fsub double %2502, %2543
  %2545 = fsub double %2522, %2543
  %2546 = fdiv double %2544, %2545
  %2547 = fsub double %2536, %2541
  %2548 = tail call double @llvm.fmuladd.f64(double %2546, double %2547, double %2541)
  br label %2549

2549:                                             ; preds = %2538, %2532, %2527
  %2550 = phi double [ %2548, %2538 ], [ %2536, %2532 ], [ %2531, %2527 ]
  %2551 = getelementptr inbounds nuw double, ptr %5, i64 %2483
  store double %2550, ptr %2551, align 8, !tbaa !41
  br label %2552

2552:                                             ; preds = %2549, %2482
  %2553 = add nuw nsw i64 %2483, 1
  %2554 = icmp eq i64 %2553, 8
  br i1 %2554, label %2555, label %2482, !llvm.loop !80

2555:                                             ; preds = %2552
  %2556 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2557

2557:                                             ; preds = %2355, %2555
  %2558 = phi <8 x double> [ %2556, %2555 ], [ zeroinitializer, %2355 ]
  %2559 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2560 = fcmp ogt <8 x double> %2559, zeroinitializer
  %2561 = sext <8 x i1> %2560 to <8 x i64>
  %2562 = xor <8 x i64> %2561, splat (i64 -1)
  %2563 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %2564 = fcmp oeq <8 x double> %2563, splat (double 1.000000e+00)
  %2565 = fcmp oeq <8 x double> %2563, splat (double 2.000000e+00)
  %2566 = or <8 x i1> %2564, %2565
  %2567 = select <8 x i1> %2566, <8 x i64> %2562, <8 x i64> zeroinitializer
  %2568 = xor <8 x i64> %2567, %2561
  %2569 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2570 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %2571 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2572 = icmp eq <8 x i64> %2568, splat (i64 -1)
  %2573 = select <8 x i1> %2572, <8 x double> %2571, <8 x double> %2570
  %2574 = bitcast <8 x i1> %2560 to i8
  %2575 = icmp eq i8 %2574, 0
  br i1 %2575, label %2607, label %2576

2576:                                             ; preds = %2557
  %2577 = select <8 x i1> %2560, <8 x double> %2558, <8 x double> %2573
  %2578 = fmul <8 x double> %2577, splat (double 0x3EB0C6F7A0B5ED8D)
  %2579 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2578)
  %2580 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2579)
  %2581 = fmul <8 x double> %2580, %2580
  %2582 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2580, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2581)
  %2583 = fadd <8 x double> %2582, splat (double 0x402DD4891DBECC6B)
  %2584 = fmul <8 x double> %2580, splat (double 0x40C77A698FD9BCCA)
  %2585 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2581, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2584)
  %2586 = fadd <8 x double> %2585, splat (double 0xC0B2D7440748F0B3)
  %2587 = fmul <8 x double> %2580, splat (double 0xC148A99584203885)
  %2588 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2581, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2587)
  %2589 = fadd <8 x double> %2588, splat (double 0x4118B9E59F2691E5)
  %2590 = fmul <8 x double> %2589, splat (double 2.000000e+00)
  %2591 = fneg <8 x double> %2586
  %2592 = fmul <8 x double> %2583, splat (double 4.000000e+00)
  %2593 = fneg <8 x double> %2589
  %2594 = fmul <8 x double> %2592, %2593
  %2595 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2586, <8 x double> %2586, <8 x double> %2594)
  %2596 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2595)
  %2597 = fsub <8 x double> %2591, %2596
  %2598 = fdiv <8 x double> %2590, %2597
  %2599 = fadd <8 x double> %2598, splat (double 0x408451671D164BD4)
  %2600 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2598, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2601 = fmul <8 x double> %2600, splat (double -4.000000e+00)
  %2602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2599, <8 x double> %2599, <8 x double> %2601)
  %2603 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2602)
  %2604 = fsub <8 x double> %2599, %2603
  %2605 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2604, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2606 = select <8 x i1> %2560, <8 x double> %2605, <8 x double> %2569
  br label %2607

2607:                                             ; preds = %2576, %2557
  %2608 = phi <8 x double> [ %2577, %2576 ], [ %2573, %2557 ]
  %2609 = phi <8 x double> [ %2606, %2576 ], [ %2569, %2557 ]
  %2610 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %2611 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %2612 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %2613 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2614 = fmul <8 x double> %2612, %2613
  %2615 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2610, <8 x double> %2611, <8 x double> %2614)
  %2616 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2617 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2618 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2619 = fneg <8 x double> %2615
  %2620 = fmul <8 x double> %2618, %2619
  %2621 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2616, <8 x double> %2617, <8 x double> %2620)
  %2622 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %2623 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2618, <8 x double> %2622, <8 x double> %2616)
  %2624 = fdiv <8 x double> %2621, %2623
  %2625 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2626 = select <8 x i1> %2572, <8 x double> %2625, <8 x double> %2570
  store <8 x double> %2626, ptr %186, align 64, !tbaa !26
  %2627 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %2628 = select <8 x i1> %2572, <8 x double> %2627, <8 x double> %2624
  store <8 x double> %2628, ptr %187, align 64, !tbaa !26
  store <8 x double> %2608, ptr %180, align 64, !tbaa !26
  %2629 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %2630 = and <8 x i64> %2629, %2567
  %2631 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2630)
  %2632 = icmp eq i64 %2631, 0
  br i1 %2632, label %3235, label %2633

2633:                                             ; preds = %2607
  %2634 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %2635 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %2636 = fmul <8 x double> %2612, %2635
  %2637 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2610, <8 x double> %2634, <8 x double> %2636)
  %2638 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %2639 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %2640 = fdiv <8 x double> %2638, %2639
  %2641 = fmul <8 x double> %2570, splat (double 3.000000e-01)
  %2642 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %2643 = fadd <8 x double> %2570, %2642
  %2644 = fadd <8 x double> %2643, splat (double 2.000000e+05)
  %2645 = fmul <8 x double> %2639, splat (double 2.870530e+02)
  %2646 = fdiv <8 x double> %2570, %2645
  %2647 = fcmp ogt <8 x double> %2608, %2641
  %2648 = select <8 x i1> %2647, <8 x double> %2608, <8 x double> %2641
  %2649 = fcmp olt <8 x double> %2648, %2644
  %2650 = select <8 x i1> %2649, <8 x double> %2648, <8 x double> %2644
  %2651 = icmp eq <8 x i64> %2567, zeroinitializer
  %2652 = select <8 x i1> %2651, <8 x double> %2608, <8 x double> %2650
  %2653 = fdiv <8 x double> %2626, splat (double 2.870530e+02)
  %2654 = fmul <8 x double> %2646, splat (double 2.000000e+00)
  %2655 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2654)
  br label %2656

2656:                                             ; preds = %2698, %2633
  %2657 = phi <8 x double> [ %2609, %2633 ], [ %2691, %2698 ]
  %2658 = phi <8 x double> [ %2641, %2633 ], [ %2889, %2698 ]
  %2659 = phi <8 x double> [ %2644, %2633 ], [ %2886, %2698 ]
  %2660 = phi <8 x i64> [ %2630, %2633 ], [ %2905, %2698 ]
  %2661 = phi i32 [ 0, %2633 ], [ %2910, %2698 ]
  %2662 = phi <8 x double> [ %2652, %2633 ], [ %2907, %2698 ]
  %2663 = fmul <8 x double> %2662, splat (double 0x3EB0C6F7A0B5ED8D)
  %2664 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2663)
  %2665 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2664)
  %2666 = fmul <8 x double> %2665, %2665
  %2667 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2665, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2666)
  %2668 = fadd <8 x double> %2667, splat (double 0x402DD4891DBECC6B)
  %2669 = fmul <8 x double> %2665, splat (double 0x40C77A698FD9BCCA)
  %2670 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2666, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2669)
  %2671 = fadd <8 x double> %2670, splat (double 0xC0B2D7440748F0B3)
  %2672 = fmul <8 x double> %2665, splat (double 0xC148A99584203885)
  %2673 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2666, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2672)
  %2674 = fadd <8 x double> %2673, splat (double 0x4118B9E59F2691E5)
  %2675 = fmul <8 x double> %2674, splat (double 2.000000e+00)
  %2676 = fneg <8 x double> %2671
  %2677 = fmul <8 x double> %2668, splat (double 4.000000e+00)
  %2678 = fneg <8 x double> %2674
  %2679 = fmul <8 x double> %2677, %2678
  %2680 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2671, <8 x double> %2671, <8 x double> %2679)
  %2681 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2680)
  %2682 = fsub <8 x double> %2676, %2681
  %2683 = fdiv <8 x double> %2675, %2682
  %2684 = fadd <8 x double> %2683, splat (double 0x408451671D164BD4)
  %2685 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2683, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2686 = fmul <8 x double> %2685, splat (double -4.000000e+00)
  %2687 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2684, <8 x double> %2684, <8 x double> %2686)
  %2688 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2687)
  %2689 = fsub <8 x double> %2684, %2688
  %2690 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2689, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2691 = select <8 x i1> %2651, <8 x double> %2657, <8 x double> %2690
  %2692 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2691, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2693 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2691, <8 x double> %2692, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2694 = load i64, ptr %157, align 8, !tbaa !20, !noalias !99
  %2695 = icmp sgt i64 %2694, 0
  br i1 %2695, label %2696, label %2698

2696:                                             ; preds = %2656
  %2697 = fdiv <8 x double> splat (double 1.000000e+00), %2693
  br label %2913

2698:                                             ; preds = %3184, %2656
  %2699 = phi <8 x double> [ zeroinitializer, %2656 ], [ %3193, %3184 ]
  %2700 = phi <8 x double> [ zeroinitializer, %2656 ], [ %3194, %3184 ]
  %2701 = extractelement <8 x double> %2699, i64 0
  %2702 = extractelement <8 x double> %2699, i64 1
  %2703 = fadd double %2701, %2702
  %2704 = extractelement <8 x double> %2699, i64 2
  %2705 = fadd double %2703, %2704
  %2706 = extractelement <8 x double> %2699, i64 3
  %2707 = fadd double %2705, %2706
  %2708 = extractelement <8 x double> %2699, i64 4
  %2709 = fadd double %2707, %2708
  %2710 = extractelement <8 x double> %2699, i64 5
  %2711 = fadd double %2709, %2710
  %2712 = extractelement <8 x double> %2699, i64 6
  %2713 = fadd double %2711, %2712
  %2714 = extractelement <8 x double> %2699, i64 7
  %2715 = fadd double %2713, %2714
  %2716 = insertelement <8 x double> poison, double %2715, i64 0
  %2717 = extractelement <8 x double> %2700, i64 0
  %2718 = extractelement <8 x double> %2700, i64 1
  %2719 = fadd double %2717, %2718
  %2720 = extractelement <8 x double> %2700, i64 2
  %2721 = fadd double %2719, %2720
  %2722 = extractelement <8 x double> %2700, i64 3
  %2723 = fadd double %2721, %2722
  %2724 = extractelement <8 x double> %2700, i64 4
  %2725 = fadd double %2723, %2724
  %2726 = extractelement <8 x double> %2700, i64 5
  %2727 = fadd double %2725, %2726
  %2728 = extractelement <8 x double> %2700, i64 6
  %2729 = fadd double %2727, %2728
  %2730 = extractelement <8 x double> %2700, i64 7
  %2731 = fadd double %2729, %2730
  %2732 = shufflevector <8 x double> %2716, <8 x double> poison, <8 x i32> zeroinitializer
  %2733 = insertelement <8 x double> poison, double %2731, i64 0
  %2734 = shufflevector <8 x double> %2733, <8 x double> poison, <8 x i32> zeroinitializer
  %2735 = fsub <8 x double> %2662, %2626
  %2736 = fcmp ogt <8 x double> %2735, zeroinitializer
  %2737 = select <8 x i1> %2736, <8 x double> %2735, <8 x double> zeroinitializer
  %2738 = fadd <8 x double> %2691, splat (double 2.731500e+02)
  %2739 = fdiv <8 x double> %2737, splat (double 4.615260e+02)
  %2740 = fadd <8 x double> %2653, %2739
  %2741 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %2742 = fdiv <8 x double> %2740, %2741
  %2743 = fmul <8 x double> %2741, %2742
  %2744 = fdiv <8 x double> %2662, %2743
  %2745 = load <8 x double>, ptr %179, align 64, !tbaa !26, !noalias !102
  %2746 = fsub <8 x double> %2662, %2745
  %2747 = load <8 x double>, ptr %192, align 64, !tbaa !26, !noalias !102
  %2748 = fsub <8 x double> %2746, %2747
  %2749 = load <8 x double>, ptr %193, align 64, !tbaa !26, !noalias !102
  %2750 = load <8 x double>, ptr %139, align 64, !tbaa !26, !noalias !102
  %2751 = fcmp une <8 x double> %2750, splat (double 2.000000e+00)
  %2752 = load <8 x double>, ptr %194, align 64, !tbaa !26, !noalias !102
  %2753 = select <8 x i1> %2751, <8 x double> zeroinitializer, <8 x double> %2752
  %2754 = fadd <8 x double> %2749, %2753
  %2755 = fcmp ule <8 x double> %2746, zeroinitializer
  %2756 = fcmp ule <8 x double> %2754, zeroinitializer
  %2757 = or <8 x i1> %2755, %2756
  %2758 = fmul <8 x double> %2742, splat (double 2.000000e+00)
  %2759 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2758)
  %2760 = fmul <8 x double> %2759, %2754
  %2761 = fadd <8 x double> %2746, splat (double 2.000000e+02)
  %2762 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2761)
  %2763 = select <8 x i1> %2755, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2762
  %2764 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2746, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2765 = fmul <8 x double> %2764, %2760
  %2766 = fmul <8 x double> %2763, %2763
  %2767 = fmul <8 x double> %2763, %2766
  %2768 = fdiv <8 x double> %2765, %2767
  %2769 = fmul <8 x double> %2746, %2760
  %2770 = fdiv <8 x double> %2769, %2763
  %2771 = select <8 x i1> %2757, <8 x double> zeroinitializer, <8 x double> %2770
  %2772 = select <8 x i1> %2757, <8 x double> zeroinitializer, <8 x double> %2768
  %2773 = fcmp ule <8 x double> %2748, zeroinitializer
  %2774 = load <8 x double>, ptr %195, align 64, !tbaa !26, !noalias !102
  %2775 = fmul <8 x double> %2748, %2774
  %2776 = select <8 x i1> %2773, <8 x double> zeroinitializer, <8 x double> %2775
  %2777 = fadd <8 x double> %2776, %2771
  %2778 = select <8 x i1> %2773, <8 x double> zeroinitializer, <8 x double> %2774
  %2779 = fadd <8 x double> %2778, %2772
  %2780 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %2781 = fsub <8 x double> %2745, %2662
  %2782 = fcmp ule <8 x double> %2781, zeroinitializer
  %2783 = fcmp ule <8 x double> %2780, zeroinitializer
  %2784 = or <8 x i1> %2782, %2783
  %2785 = fmul <8 x double> %2655, %2780
  %2786 = fadd <8 x double> %2781, splat (double 2.000000e+02)
  %2787 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2786)
  %2788 = select <8 x i1> %2782, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2787
  %2789 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2781, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2790 = fmul <8 x double> %2789, %2785
  %2791 = fmul <8 x double> %2788, %2788
  %2792 = fmul <8 x double> %2788, %2791
  %2793 = fdiv <8 x double> %2790, %2792
  %2794 = fmul <8 x double> %2781, %2785
  %2795 = fdiv <8 x double> %2794, %2788
  %2796 = load <8 x double>, ptr %164, align 64, !tbaa !26, !noalias !105
  %2797 = load <8 x double>, ptr %181, align 64, !tbaa !26, !noalias !105
  %2798 = load <8 x double>, ptr %165, align 64, !tbaa !26, !noalias !105
  %2799 = load <8 x double>, ptr %182, align 64, !tbaa !26, !noalias !105
  %2800 = fmul <8 x double> %2798, %2799
  %2801 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2796, <8 x double> %2797, <8 x double> %2800)
  %2802 = load <8 x double>, ptr %185, align 64, !tbaa !26, !noalias !105
  %2803 = load <8 x double>, ptr %163, align 64, !tbaa !26, !noalias !105
  %2804 = load <8 x double>, ptr %183, align 64, !tbaa !26, !noalias !105
  %2805 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2802, <8 x double> %2803, <8 x double> %2804)
  %2806 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !105
  %2807 = fneg <8 x double> %2801
  %2808 = fmul <8 x double> %2802, %2807
  %2809 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2804, <8 x double> %2806, <8 x double> %2808)
  %2810 = fdiv <8 x double> %2809, %2805
  %2811 = fcmp ogt <8 x double> %2737, splat (double 2.000000e+03)
  %2812 = select <8 x i1> %2811, <8 x double> %2737, <8 x double> splat (double 2.000000e+03)
  %2813 = fmul <8 x double> %2812, splat (double 0x3EB0C6F7A0B5ED8D)
  %2814 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2813)
  %2815 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2814)
  %2816 = fmul <8 x double> %2815, %2815
  %2817 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2815, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2816)
  %2818 = fadd <8 x double> %2817, splat (double 0x402DD4891DBECC6B)
  %2819 = fmul <8 x double> %2815, splat (double 0x40C77A698FD9BCCA)
  %2820 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2816, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2819)
  %2821 = fadd <8 x double> %2820, splat (double 0xC0B2D7440748F0B3)
  %2822 = fmul <8 x double> %2815, splat (double 0xC148A99584203885)
  %2823 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2816, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2822)
  %2824 = fadd <8 x double> %2823, splat (double 0x4118B9E59F2691E5)
  %2825 = fmul <8 x double> %2824, splat (double 2.000000e+00)
  %2826 = fneg <8 x double> %2821
  %2827 = fmul <8 x double> %2818, splat (double 4.000000e+00)
  %2828 = fneg <8 x double> %2824
  %2829 = fmul <8 x double> %2827, %2828
  %2830 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2821, <8 x double> %2821, <8 x double> %2829)
  %2831 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2830)
  %2832 = fsub <8 x double> %2826, %2831
  %2833 = fdiv <8 x double> %2825, %2832
  %2834 = fadd <8 x double> %2833, splat (double 0x408451671D164BD4)
  %2835 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2833, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2836 = fmul <8 x double> %2835, splat (double -4.000000e+00)
  %2837 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2834, <8 x double> %2834, <8 x double> %2836)
  %2838 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2837)
  %2839 = fsub <8 x double> %2834, %2838
  %2840 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2839, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2841 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2840, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2842 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2840, <8 x double> %2841, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2843 = fadd <8 x double> %2840, splat (double 2.731500e+02)
  %2844 = fcmp ule <8 x double> %2840, %2810
  %2845 = load <8 x double>, ptr %197, align 64, !tbaa !26, !noalias !105
  %2846 = fmul <8 x double> %2805, %2845
  %2847 = fadd <8 x double> %2805, %2845
  %2848 = fdiv <8 x double> %2846, %2847
  %2849 = fdiv <8 x double> %2848, %2842
  %2850 = fmul <8 x double> %2843, splat (double 4.615260e+02)
  %2851 = fmul <8 x double> %2812, %2842
  %2852 = fmul <8 x double> %2840, %2845
  %2853 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2810, <8 x double> %2805, <8 x double> %2852)
  %2854 = fdiv <8 x double> %2853, %2847
  %2855 = select <8 x i1> %2844, <8 x double> %2810, <8 x double> %2854
  store <8 x double> %2855, ptr %187, align 64, !tbaa !26, !noalias !105
  %2856 = fsub <8 x double> %2840, %2810
  %2857 = fmul <8 x double> %2856, %2849
  %2858 = select <8 x i1> %2844, <8 x double> zeroinitializer, <8 x double> %2857
  %2859 = fmul <8 x double> %2738, splat (double 4.615260e+02)
  %2860 = fmul <8 x double> %2738, %2859
  %2861 = fmul <8 x double> %2662, %2693
  %2862 = fdiv <8 x double> %2860, %2861
  %2863 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2803, <8 x double> %2662, <8 x double> %2637)
  %2864 = fsub <8 x double> %2732, %2858
  %2865 = fmul <8 x double> %2864, splat (double -4.615260e+02)
  %2866 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2640, <8 x double> %2863, <8 x double> %2865)
  %2867 = fmul <8 x double> %2795, splat (double -2.870530e+02)
  %2868 = select <8 x i1> %2784, <8 x double> splat (double -0.000000e+00), <8 x double> %2867
  %2869 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2744, <8 x double> %2777, <8 x double> %2868)
  %2870 = fadd <8 x double> %2869, %2866
  %2871 = fneg <8 x double> %2843
  %2872 = fmul <8 x double> %2850, %2871
  %2873 = fdiv <8 x double> %2872, %2851
  %2874 = fmul <8 x double> %2873, %2849
  %2875 = select <8 x i1> %2844, <8 x double> splat (double -0.000000e+00), <8 x double> %2874
  %2876 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2734, <8 x double> %2862, <8 x double> %2875)
  %2877 = fmul <8 x double> %2876, splat (double -4.615260e+02)
  %2878 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2640, <8 x double> %2803, <8 x double> %2877)
  %2879 = fmul <8 x double> %2793, splat (double 2.870530e+02)
  %2880 = select <8 x i1> %2784, <8 x double> zeroinitializer, <8 x double> %2879
  %2881 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2744, <8 x double> %2779, <8 x double> %2880)
  %2882 = fadd <8 x double> %2881, %2878
  %2883 = fcmp ule <8 x double> %2870, zeroinitializer
  %2884 = fcmp olt <8 x double> %2659, %2662
  %2885 = select <8 x i1> %2883, <8 x i1> splat (i1 true), <8 x i1> %2884
  %2886 = select <8 x i1> %2885, <8 x double> %2659, <8 x double> %2662
  %2887 = fcmp ogt <8 x double> %2658, %2662
  %2888 = select <8 x i1> %2887, <8 x double> %2658, <8 x double> %2662
  %2889 = select <8 x i1> %2883, <8 x double> %2888, <8 x double> %2658
  %2890 = fdiv <8 x double> %2870, %2882
  %2891 = fsub <8 x double> %2662, %2890
  %2892 = fsub <8 x double> %2891, %2662
  %2893 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2892)
  %2894 = fcmp uge <8 x double> %2893, splat (double 2.000000e-01)
  %2895 = fcmp uge <8 x double> %2889, %2891
  %2896 = fcmp uge <8 x double> %2891, %2886
  %2897 = or <8 x i1> %2895, %2896
  %2898 = and <8 x i1> %2894, %2897
  %2899 = fadd <8 x double> %2889, %2886
  %2900 = fmul <8 x double> %2899, splat (double 5.000000e-01)
  %2901 = select <8 x i1> %2898, <8 x double> %2900, <8 x double> %2891
  %2902 = fsub <8 x double> %2901, %2662
  %2903 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2902)
  %2904 = fcmp oge <8 x double> %2903, splat (double 2.000000e-01)
  %2905 = select <8 x i1> %2904, <8 x i64> %2660, <8 x i64> zeroinitializer
  %2906 = icmp eq <8 x i64> %2905, zeroinitializer
  %2907 = select <8 x i1> %2906, <8 x double> %2662, <8 x double> %2901
  %2908 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2905)
  %2909 = icmp ne i64 %2908, 0
  %2910 = add nuw nsw i32 %2661, 1
  %2911 = icmp samesign ult i32 %2661, 59
  %2912 = select i1 %2909, i1 %2911, i1 false
  br i1 %2912, label %2656, label %3198, !llvm.loop !108

2913:                                             ; preds = %2696, %3184
  %2914 = phi <8 x double> [ zeroinitializer, %2696 ], [ %3194, %3184 ]
  %2915 = phi <8 x double> [ zeroinitializer, %2696 ], [ %3193, %3184 ]
  %2916 = phi i64 [ 0, %2696 ], [ %3195, %3184 ]
  %2917 = load ptr, ptr %130, align 8, !tbaa !28, !noalias !99
  %2918 = getelementptr inbounds nuw %struct.Piece, ptr %2917, i64 %2916
  %2919 = getelementptr inbounds nuw i8, ptr %2918, i64 6208
  %2920 = load <8 x double>, ptr %2919, align 64, !tbaa !26, !noalias !99
  %2921 = getelementptr inbounds nuw i8, ptr %2918, i64 6272
  %2922 = load <8 x double>, ptr %2921, align 64, !tbaa !26, !noalias !99
  %2923 = getelementptr inbounds nuw i8, ptr %2918, i64 7616
  %2924 = load <8 x double>, ptr %2923, align 64, !tbaa !26, !noalias !99
  %2925 = fcmp ule <8 x double> %2924, splat (double 1.000000e+00)
  %2926 = fmul <8 x double> %2691, %2922
  %2927 = fcmp ogt <8 x double> %2920, %2926
  %2928 = and <8 x i1> %2925, %2927
  %2929 = fneg <8 x double> %2922
  %2930 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2929, <8 x double> %2691, <8 x double> %2920)
  %2931 = fmul <8 x double> %2697, %2930
  %2932 = select <8 x i1> %2928, <8 x double> %2931, <8 x double> zeroinitializer
  %2933 = fmul <8 x double> %2697, %2929
  %2934 = select <8 x i1> %2928, <8 x double> %2933, <8 x double> zeroinitializer
  %2935 = xor <8 x i1> %2928, splat (i1 true)
  %2936 = bitcast <8 x i1> %2935 to i8
  %2937 = icmp eq i8 %2936, 0
  br i1 %2937, label %2941, label %2938

2938:                                             ; preds = %2913
  %2939 = fdiv <8 x double> %2920, %2922
  %2940 = select <8 x i1> %2928, <8 x double> %2691, <8 x double> %2939
  br label %2941

2941:                                             ; preds = %2938, %2913
  %2942 = phi <8 x double> [ %2940, %2938 ], [ %2691, %2913 ]
  %2943 = getelementptr inbounds nuw i8, ptr %2918, i64 8448
  %2944 = load <8 x i64>, ptr %2943, align 64, !tbaa !26, !noalias !99
  %2945 = getelementptr inbounds nuw i8, ptr %2918, i64 2240
  %2946 = load <8 x double>, ptr %2945, align 64, !tbaa !26, !noalias !99
  %2947 = fcmp ogt <8 x double> %2946, zeroinitializer
  %2948 = select <8 x i1> %2925, <8 x i1> %2947, <8 x i1> zeroinitializer
  %2949 = select <8 x i1> %2948, <8 x i64> %2944, <8 x i64> zeroinitializer
  %2950 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2949)
  %2951 = icmp eq i64 %2950, 0
  br i1 %2951, label %2963, label %2952

2952:                                             ; preds = %2941
  %2953 = getelementptr inbounds nuw i8, ptr %2918, i64 6336
  %2954 = load <8 x double>, ptr %2953, align 64, !tbaa !26, !noalias !99
  %2955 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2929, <8 x double> %2954, <8 x double> %2920)
  %2956 = fcmp ogt <8 x double> %2955, zeroinitializer
  %2957 = select <8 x i1> %2956, <8 x double> %2955, <8 x double> zeroinitializer
  %2958 = fmul <8 x double> %2697, %2957
  %2959 = icmp eq <8 x i64> %2949, zeroinitializer
  %2960 = select <8 x i1> %2959, <8 x double> %2932, <8 x double> %2958
  %2961 = select <8 x i1> %2959, <8 x double> %2942, <8 x double> %2954
  %2962 = select <8 x i1> %2959, <8 x double> %2934, <8 x double> zeroinitializer
  br label %2963

2963:                                             ; preds = %2952, %2941
  %2964 = phi <8 x double> [ %2961, %2952 ], [ %2942, %2941 ]
  %2965 = phi <8 x double> [ %2962, %2952 ], [ %2934, %2941 ]
  %2966 = phi <8 x double> [ %2960, %2952 ], [ %2932, %2941 ]
  %2967 = getelementptr inbounds nuw i8, ptr %2918, i64 6016
  store <8 x double> %2966, ptr %2967, align 64, !tbaa !26, !noalias !99
  %2968 = getelementptr inbounds nuw i8, ptr %2918, i64 5952
  store <8 x double> %2964, ptr %2968, align 64, !tbaa !26, !noalias !99
  %2969 = getelementptr inbounds nuw i8, ptr %2918, i64 6080
  store <8 x double> zeroinitializer, ptr %2969, align 64, !tbaa !26, !noalias !99
  %2970 = load i64, ptr %119, align 16, !tbaa !21, !noalias !99
  %2971 = sitofp i64 %2970 to double
  %2972 = insertelement <8 x double> poison, double %2971, i64 0
  %2973 = shufflevector <8 x double> %2972, <8 x double> poison, <8 x i32> zeroinitializer
  %2974 = getelementptr inbounds nuw i8, ptr %2918, i64 6144
  store <8 x double> %2973, ptr %2974, align 64, !tbaa !26, !noalias !99
  %2975 = getelementptr inbounds nuw i8, ptr %2918, i64 7872
  %2976 = getelementptr inbounds nuw i8, ptr %2918, i64 8128
  %2977 = load <8 x double>, ptr %2976, align 64, !tbaa !26, !noalias !109
  %2978 = fcmp ole <8 x double> %2691, %2977
  %2979 = getelementptr inbounds nuw i8, ptr %2918, i64 8192
  %2980 = load <8 x double>, ptr %2979, align 64, !tbaa !26, !noalias !109
  %2981 = fcmp oge <8 x double> %2691, %2980
  %2982 = or <8 x i1> %2978, %2981
  %2983 = bitcast <8 x i1> %2982 to i8
  %2984 = icmp eq i8 %2983, 0
  br i1 %2984, label %2985, label %2988

2985:                                             ; preds = %2963
  %2986 = getelementptr inbounds nuw i8, ptr %2918, i64 8000
  %2987 = load <8 x double>, ptr %2986, align 64, !tbaa !26, !noalias !109
  br label %3110

2988:                                             ; preds = %2963
  %2989 = load i64, ptr %119, align 16, !tbaa !21, !noalias !112
  %2990 = sitofp i64 %2989 to double
  %2991 = insertelement <8 x double> poison, double %2990, i64 0
  %2992 = shufflevector <8 x double> %2991, <8 x double> poison, <8 x i32> zeroinitializer
  %2993 = icmp sgt i64 %2989, 0
  br i1 %2993, label %2994, label %3085

2994:                                             ; preds = %2988
  %2995 = sext <8 x i1> %2982 to <8 x i64>
  %2996 = getelementptr inbounds nuw i8, ptr %2918, i64 8632
  %2997 = load ptr, ptr %2996, align 8, !tbaa !87, !noalias !112
  %2998 = getelementptr inbounds nuw i8, ptr %2918, i64 8640
  %2999 = load ptr, ptr %2998, align 64, !tbaa !88, !noalias !112
  %3000 = getelementptr inbounds nuw i8, ptr %2918, i64 8512
  %3001 = load i64, ptr %3000, align 64, !tbaa !31, !noalias !112
  %3002 = getelementptr inbounds nuw i8, ptr %2918, i64 8656
  %3003 = getelementptr inbounds nuw i8, ptr %2918, i64 8648
  %3004 = getelementptr inbounds nuw i8, ptr %2918, i64 8664
  br label %3005

3005:                                             ; preds = %2994, %3053
  %3006 = phi <8 x i64> [ %2995, %2994 ], [ %3025, %3053 ]
  %3007 = phi i64 [ %2989, %2994 ], [ %3015, %3053 ]
  %3008 = phi <8 x double> [ splat (double 1.000000e+09), %2994 ], [ %3068, %3053 ]
  %3009 = phi <8 x double> [ zeroinitializer, %2994 ], [ %3072, %3053 ]
  %3010 = phi <8 x double> [ splat (double 1.000000e+09), %2994 ], [ %3050, %3053 ]
  %3011 = phi <8 x double> [ splat (double 1.000000e+00), %2994 ], [ %3049, %3053 ]
  %3012 = phi <8 x double> [ %2992, %2994 ], [ %3076, %3053 ]
  %3013 = phi <8 x double> [ zeroinitializer, %2994 ], [ %3065, %3053 ]
  %3014 = phi <8 x double> [ zeroinitializer, %2994 ], [ %3063, %3053 ]
  %3015 = add nsw i64 %3007, -1
  %3016 = getelementptr inbounds nuw <8 x double>, ptr %2997, i64 %3015
  %3017 = load <8 x double>, ptr %3016, align 64, !tbaa !26, !noalias !112
  %3018 = getelementptr inbounds nuw <8 x double>, ptr %2999, i64 %3015
  %3019 = load <8 x double>, ptr %3018, align 64, !tbaa !26, !noalias !112
  %3020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3019, <8 x double> %2691, <8 x double> %3017)
  %3021 = fsub <8 x double> %3020, %2691
  %3022 = fcmp ogt <8 x double> %3021, splat (double 1.000000e-09)
  %3023 = select <8 x i1> %3022, <8 x i64> %3006, <8 x i64> zeroinitializer
  %3024 = icmp sgt i64 %3007, %3001
  %3025 = select i1 %3024, <8 x i64> %3023, <8 x i64> zeroinitializer
  %3026 = icmp slt i64 %3007, %2989
  br i1 %3026, label %3027, label %3039

3027:                                             ; preds = %3005
  %3028 = load ptr, ptr %3002, align 16, !tbaa !85, !noalias !112
  %3029 = getelementptr inbounds nuw <8 x double>, ptr %3028, i64 %3007
  %3030 = load <8 x double>, ptr %3029, align 64, !tbaa !26, !noalias !112
  %3031 = fmul <8 x double> %3021, %3030
  %3032 = icmp eq <8 x i64> %3025, %3006
  %3033 = select <8 x i1> %3032, <8 x double> zeroinitializer, <8 x double> %3031
  %3034 = fadd <8 x double> %3014, %3033
  %3035 = fadd <8 x double> %3019, splat (double -1.000000e+00)
  %3036 = fmul <8 x double> %3035, %3030
  %3037 = select <8 x i1> %3032, <8 x double> zeroinitializer, <8 x double> %3036
  %3038 = fadd <8 x double> %3013, %3037
  br label %3039

3039:                                             ; preds = %3027, %3005
  %3040 = phi <8 x double> [ %3034, %3027 ], [ %3014, %3005 ]
  %3041 = phi <8 x double> [ %3038, %3027 ], [ %3013, %3005 ]
  br i1 %3024, label %3042, label %3048

3042:                                             ; preds = %3039
  %3043 = fneg <8 x double> %3021
  %3044 = icmp eq <8 x i64> %3025, %3006
  %3045 = select <8 x i1> %3044, <8 x double> %3010, <8 x double> %3043
  %3046 = fsub <8 x double> splat (double 1.000000e+00), %3019
  %3047 = select <8 x i1> %3044, <8 x double> %3011, <8 x double> %3046
  br label %3048

3048:                                             ; preds = %3042, %3039
  %3049 = phi <8 x double> [ %3047, %3042 ], [ %3011, %3039 ]
  %3050 = phi <8 x double> [ %3045, %3042 ], [ %3010, %3039 ]
  %3051 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3025)
  %3052 = icmp eq i64 %3051, 0
  br i1 %3052, label %3078, label %3053

3053:                                             ; preds = %3048
  %3054 = load ptr, ptr %3003, align 8, !tbaa !84, !noalias !112
  %3055 = getelementptr inbounds nuw <8 x double>, ptr %3054, i64 %3015
  %3056 = load <8 x double>, ptr %3055, align 64, !tbaa !26, !noalias !112
  %3057 = load ptr, ptr %3004, align 8, !tbaa !86, !noalias !112
  %3058 = getelementptr inbounds nuw <8 x double>, ptr %3057, i64 %3015
  %3059 = load <8 x double>, ptr %3058, align 64, !tbaa !26, !noalias !112
  %3060 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3059, <8 x double> %2691, <8 x double> %3056)
  %3061 = icmp eq <8 x i64> %3025, zeroinitializer
  %3062 = select <8 x i1> %3061, <8 x double> zeroinitializer, <8 x double> %3060
  %3063 = fadd <8 x double> %3040, %3062
  %3064 = select <8 x i1> %3061, <8 x double> zeroinitializer, <8 x double> %3059
  %3065 = fadd <8 x double> %3041, %3064
  %3066 = fcmp olt <8 x double> %3008, %3021
  %3067 = select <8 x i1> %3061, <8 x i1> splat (i1 true), <8 x i1> %3066
  %3068 = select <8 x i1> %3067, <8 x double> %3008, <8 x double> %3021
  %3069 = fsub <8 x double> splat (double 1.000000e+00), %3019
  %3070 = fcmp ogt <8 x double> %3009, %3069
  %3071 = select <8 x i1> %3061, <8 x i1> splat (i1 true), <8 x i1> %3070
  %3072 = select <8 x i1> %3071, <8 x double> %3009, <8 x double> %3069
  %3073 = uitofp nneg i64 %3015 to double
  %3074 = insertelement <8 x double> poison, double %3073, i64 0
  %3075 = shufflevector <8 x double> %3074, <8 x double> poison, <8 x i32> zeroinitializer
  %3076 = select <8 x i1> %3061, <8 x double> %3012, <8 x double> %3075
  %3077 = icmp samesign ugt i64 %3007, 1
  br i1 %3077, label %3005, label %3078, !llvm.loop !115

3078:                                             ; preds = %3048, %3053
  %3079 = phi <8 x double> [ %3076, %3053 ], [ %3012, %3048 ]
  %3080 = phi <8 x double> [ %3072, %3053 ], [ %3009, %3048 ]
  %3081 = phi <8 x double> [ %3068, %3053 ], [ %3008, %3048 ]
  %3082 = phi <8 x double> [ %3063, %3053 ], [ %3040, %3048 ]
  %3083 = phi <8 x double> [ %3065, %3053 ], [ %3041, %3048 ]
  %3084 = fdiv <8 x double> %3050, %3049
  br label %3085

3085:                                             ; preds = %3078, %2988
  %3086 = phi <8 x double> [ %2992, %2988 ], [ %3079, %3078 ]
  %3087 = phi <8 x double> [ zeroinitializer, %2988 ], [ %3080, %3078 ]
  %3088 = phi <8 x double> [ splat (double 1.000000e+09), %2988 ], [ %3081, %3078 ]
  %3089 = phi <8 x double> [ zeroinitializer, %2988 ], [ %3082, %3078 ]
  %3090 = phi <8 x double> [ zeroinitializer, %2988 ], [ %3083, %3078 ]
  %3091 = phi <8 x double> [ splat (double 1.000000e+09), %2988 ], [ %3084, %3078 ]
  %3092 = fsub <8 x double> %2691, %3091
  %3093 = fcmp ogt <8 x double> %3087, splat (double 1.000000e-09)
  %3094 = select <8 x i1> %3093, <8 x double> %3087, <8 x double> splat (double 1.000000e-09)
  %3095 = fdiv <8 x double> %3088, %3094
  %3096 = fadd <8 x double> %2691, %3095
  %3097 = load <8 x double>, ptr %2975, align 64, !tbaa !26, !noalias !109
  %3098 = select <8 x i1> %2982, <8 x double> %3089, <8 x double> %3097
  store <8 x double> %3098, ptr %2975, align 64, !tbaa !26, !noalias !109
  %3099 = getelementptr inbounds nuw i8, ptr %2918, i64 7936
  %3100 = load <8 x double>, ptr %3099, align 64, !tbaa !26, !noalias !109
  %3101 = select <8 x i1> %2982, <8 x double> %3090, <8 x double> %3100
  store <8 x double> %3101, ptr %3099, align 64, !tbaa !26, !noalias !109
  %3102 = getelementptr inbounds nuw i8, ptr %2918, i64 8000
  %3103 = load <8 x double>, ptr %3102, align 64, !tbaa !26, !noalias !109
  %3104 = select <8 x i1> %2982, <8 x double> %3086, <8 x double> %3103
  store <8 x double> %3104, ptr %3102, align 64, !tbaa !26, !noalias !109
  %3105 = getelementptr inbounds nuw i8, ptr %2918, i64 8064
  %3106 = load <8 x double>, ptr %3105, align 64, !tbaa !26, !noalias !109
  %3107 = select <8 x i1> %2982, <8 x double> %2691, <8 x double> %3106
  store <8 x double> %3107, ptr %3105, align 64, !tbaa !26, !noalias !109
  %3108 = select <8 x i1> %2982, <8 x double> %3092, <8 x double> %2977
  store <8 x double> %3108, ptr %2976, align 64, !tbaa !26, !noalias !109
  %3109 = select <8 x i1> %2982, <8 x double> %3096, <8 x double> %2980
  store <8 x double> %3109, ptr %2979, align 64, !tbaa !26, !noalias !109
  br label %3110

3110:                                             ; preds = %2985, %3085
  %3111 = phi <8 x double> [ %2987, %2985 ], [ %3104, %3085 ]
  %3112 = load i64, ptr %119, align 16, !tbaa !21, !noalias !99
  %3113 = sitofp i64 %3112 to double
  %3114 = insertelement <8 x double> poison, double %3113, i64 0
  %3115 = shufflevector <8 x double> %3114, <8 x double> poison, <8 x i32> zeroinitializer
  %3116 = fcmp olt <8 x double> %3111, %3115
  %3117 = and <8 x i1> %2925, %3116
  %3118 = bitcast <8 x i1> %3117 to i8
  %3119 = icmp eq i8 %3118, 0
  br i1 %3119, label %3184, label %3120

3120:                                             ; preds = %3110
  %3121 = getelementptr inbounds nuw i8, ptr %2918, i64 7936
  %3122 = load <8 x double>, ptr %3121, align 64, !tbaa !26, !noalias !109
  %3123 = getelementptr inbounds nuw i8, ptr %2918, i64 8064
  %3124 = load <8 x double>, ptr %3123, align 64, !tbaa !26, !noalias !109
  %3125 = fsub <8 x double> %2691, %3124
  %3126 = load <8 x double>, ptr %2975, align 64, !tbaa !26, !noalias !109
  %3127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3122, <8 x double> %3125, <8 x double> %3126)
  %3128 = getelementptr inbounds nuw i8, ptr %2918, i64 6464
  %3129 = load <8 x double>, ptr %3128, align 64, !tbaa !26, !noalias !99
  %3130 = getelementptr inbounds nuw i8, ptr %2918, i64 5888
  %3131 = load <8 x double>, ptr %3130, align 64, !tbaa !26, !noalias !99
  %3132 = getelementptr inbounds nuw i8, ptr %2918, i64 7424
  %3133 = load <8 x double>, ptr %3132, align 64, !tbaa !26, !noalias !99
  %3134 = fneg <8 x double> %3133
  %3135 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3129, <8 x double> %3131, <8 x double> %3134)
  %3136 = getelementptr inbounds nuw i8, ptr %2918, i64 7360
  %3137 = load <8 x double>, ptr %3136, align 64, !tbaa !26, !noalias !99
  %3138 = fadd <8 x double> %3129, %3137
  %3139 = getelementptr inbounds nuw i8, ptr %2918, i64 8320
  %3140 = load <8 x i64>, ptr %3139, align 64, !tbaa !26, !noalias !99
  %3141 = getelementptr inbounds nuw i8, ptr %2918, i64 8736
  %3142 = load ptr, ptr %3141, align 32, !tbaa !93, !noalias !99
  %3143 = load <8 x double>, ptr %3142, align 64, !tbaa !26, !noalias !99
  %3144 = fmul <8 x double> %3129, %3143
  %3145 = icmp eq <8 x i64> %3140, zeroinitializer
  %3146 = select <8 x i1> %3145, <8 x double> %3135, <8 x double> %3144
  %3147 = getelementptr inbounds nuw i8, ptr %2918, i64 8744
  %3148 = load ptr, ptr %3147, align 8, !tbaa !94, !noalias !99
  %3149 = load <8 x double>, ptr %3148, align 64, !tbaa !26, !noalias !99
  %3150 = fsub <8 x double> splat (double 1.000000e+00), %3149
  %3151 = fmul <8 x double> %3129, %3150
  %3152 = select <8 x i1> %3145, <8 x double> %3138, <8 x double> %3151
  %3153 = fneg <8 x double> %3152
  %3154 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3153, <8 x double> %2691, <8 x double> %3146)
  %3155 = fcmp ogt <8 x double> %3127, zeroinitializer
  %3156 = fcmp oge <8 x double> %3154, zeroinitializer
  %3157 = and <8 x i1> %3155, %3156
  %3158 = and <8 x i1> %3117, %3157
  %3159 = sext <8 x i1> %3158 to <8 x i64>
  %3160 = xor <8 x i64> %3159, splat (i64 -1)
  %3161 = fadd <8 x double> %3127, %3154
  %3162 = fcmp ogt <8 x double> %3161, zeroinitializer
  %3163 = and <8 x i1> %3117, %3162
  %3164 = select <8 x i1> %3163, <8 x i64> %3160, <8 x i64> zeroinitializer
  %3165 = or <8 x i64> %3164, %3159
  %3166 = fmul <8 x double> %2697, %3154
  %3167 = select <8 x i1> %3158, <8 x double> %3166, <8 x double> zeroinitializer
  %3168 = icmp eq <8 x i64> %3165, zeroinitializer
  %3169 = select <8 x i1> %3168, <8 x double> %2966, <8 x double> %3167
  store <8 x double> %3169, ptr %2967, align 64, !tbaa !26, !noalias !99
  %3170 = select <8 x i1> %3168, <8 x double> %2964, <8 x double> %2691
  store <8 x double> %3170, ptr %2968, align 64, !tbaa !26, !noalias !99
  %3171 = fsub <8 x double> %3122, %3152
  %3172 = fmul <8 x double> %2697, %3171
  %3173 = select <8 x i1> %3168, <8 x double> %2965, <8 x double> %3172
  %3174 = fmul <8 x double> %2697, %3127
  %3175 = fmul <8 x double> %2697, %3161
  %3176 = icmp eq <8 x i64> %3164, zeroinitializer
  %3177 = select <8 x i1> %3176, <8 x double> zeroinitializer, <8 x double> %3175
  %3178 = select <8 x i1> %3158, <8 x double> %3174, <8 x double> %3177
  store <8 x double> %3178, ptr %2969, align 64, !tbaa !26, !noalias !99
  %3179 = load i64, ptr %119, align 16, !tbaa !21, !noalias !99
  %3180 = sitofp i64 %3179 to double
  %3181 = insertelement <8 x double> poison, double %3180, i64 0
  %3182 = shufflevector <8 x double> %3181, <8 x double> poison, <8 x i32> zeroinitializer
  %3183 = select <8 x i1> %3168, <8 x double> %3182, <8 x double> %3111
  store <8 x double> %3183, ptr %2974, align 64, !tbaa !26, !noalias !99
  br label %3184

3184:                                             ; preds = %3110, %3120
  %3185 = phi <8 x double> [ %3178, %3120 ], [ zeroinitializer, %3110 ]
  %3186 = phi <8 x double> [ %3169, %3120 ], [ %2966, %3110 ]
  %3187 = phi <8 x double> [ %3173, %3120 ], [ %2965, %3110 ]
  %3188 = getelementptr inbounds nuw i8, ptr %2918, i64 128
  %3189 = load <8 x double>, ptr %3188, align 64, !tbaa !26, !noalias !99
  %3190 = fadd <8 x double> %3186, %3185
  %3191 = fmul <8 x double> %3189, %3190
  %3192 = fmul <8 x double> %3187, %3189
  %3193 = fadd <8 x double> %2915, %3191
  %3194 = fadd <8 x double> %2914, %3192
  %3195 = add nuw nsw i64 %2916, 1
  %3196 = load i64, ptr %157, align 8, !tbaa !20, !noalias !99
  %3197 = icmp slt i64 %3195, %3196
  br i1 %3197, label %2913, label %2698, !llvm.loop !116

3198:                                             ; preds = %2698
  %3199 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3200 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %3201 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %3202 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %3203 = fmul <8 x double> %3201, %3202
  %3204 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3199, <8 x double> %3200, <8 x double> %3203)
  %3205 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %3206 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %3207 = fsub <8 x double> %3206, %2907
  %3208 = fcmp ule <8 x double> %3207, zeroinitializer
  %3209 = fcmp ule <8 x double> %3205, zeroinitializer
  %3210 = or <8 x i1> %3209, %3208
  %3211 = fmul <8 x double> %2655, %3205
  %3212 = fadd <8 x double> %3207, splat (double 2.000000e+02)
  %3213 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3212)
  %3214 = select <8 x i1> %3208, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3213
  %3215 = fmul <8 x double> %3211, %3207
  %3216 = fdiv <8 x double> %3215, %3214
  %3217 = fmul <8 x double> %3216, splat (double 2.870530e+02)
  %3218 = select <8 x i1> %3210, <8 x double> zeroinitializer, <8 x double> %3217
  %3219 = fdiv <8 x double> %3218, %2640
  %3220 = fsub <8 x double> %3219, %3204
  %3221 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %3222 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %3223 = fmul <8 x double> %2742, %3222
  %3224 = fdiv <8 x double> %2777, %3223
  %3225 = fadd <8 x double> %3221, %3224
  %3226 = fdiv <8 x double> %3220, %3225
  %3227 = fcmp ogt <8 x double> %3226, zeroinitializer
  %3228 = select <8 x i1> %3227, <8 x double> %3226, <8 x double> zeroinitializer
  %3229 = fcmp olt <8 x double> %3228, %2907
  %3230 = select <8 x i1> %3229, <8 x double> %3228, <8 x double> %2907
  %3231 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3232 = select <8 x i1> %2651, <8 x double> %3231, <8 x double> %3230
  store <8 x double> %3232, ptr %186, align 64, !tbaa !26
  %3233 = select <8 x i1> %2651, <8 x double> %2628, <8 x double> %2855
  store <8 x double> %3233, ptr %187, align 64, !tbaa !26
  store <8 x double> %2907, ptr %180, align 64, !tbaa !26
  store <8 x double> %2691, ptr %200, align 64, !tbaa !26
  %3234 = load i64, ptr %157, align 8, !tbaa !20
  br label %3506

3235:                                             ; preds = %2607
  store <8 x double> %2609, ptr %200, align 64, !tbaa !26
  br i1 %2357, label %3236, label %3509

3236:                                             ; preds = %3235
  %3237 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2609, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3238 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2609, <8 x double> %3237, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3239 = fdiv <8 x double> splat (double 1.000000e+00), %3238
  br label %3240

3240:                                             ; preds = %3236, %3502
  %3241 = phi i64 [ 0, %3236 ], [ %3503, %3502 ]
  %3242 = load ptr, ptr %130, align 8, !tbaa !28, !noalias !117
  %3243 = getelementptr inbounds nuw %struct.Piece, ptr %3242, i64 %3241
  %3244 = getelementptr inbounds nuw i8, ptr %3243, i64 6208
  %3245 = load <8 x double>, ptr %3244, align 64, !tbaa !26, !noalias !117
  %3246 = getelementptr inbounds nuw i8, ptr %3243, i64 6272
  %3247 = load <8 x double>, ptr %3246, align 64, !tbaa !26, !noalias !117
  %3248 = getelementptr inbounds nuw i8, ptr %3243, i64 7616
  %3249 = load <8 x double>, ptr %3248, align 64, !tbaa !26, !noalias !117
  %3250 = fcmp ule <8 x double> %3249, splat (double 1.000000e+00)
  %3251 = fmul <8 x double> %2609, %3247
  %3252 = fcmp ogt <8 x double> %3245, %3251
  %3253 = and <8 x i1> %3250, %3252
  %3254 = fneg <8 x double> %3247
  %3255 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3254, <8 x double> %2609, <8 x double> %3245)
  %3256 = fmul <8 x double> %3239, %3255
  %3257 = select <8 x i1> %3253, <8 x double> %3256, <8 x double> zeroinitializer
  %3258 = xor <8 x i1> %3253, splat (i1 true)
  %3259 = bitcast <8 x i1> %3258 to i8
  %3260 = icmp eq i8 %3259, 0
  br i1 %3260, label %3264, label %3261

3261:                                             ; preds = %3240
  %3262 = fdiv <8 x double> %3245, %3247
  %3263 = select <8 x i1> %3253, <8 x double> %2609, <8 x double> %3262
  br label %3264

3264:                                             ; preds = %3261, %3240
  %3265 = phi <8 x double> [ %3263, %3261 ], [ %2609, %3240 ]
  %3266 = getelementptr inbounds nuw i8, ptr %3243, i64 8448
  %3267 = load <8 x i64>, ptr %3266, align 64, !tbaa !26, !noalias !117
  %3268 = getelementptr inbounds nuw i8, ptr %3243, i64 2240
  %3269 = load <8 x double>, ptr %3268, align 64, !tbaa !26, !noalias !117
  %3270 = fcmp ogt <8 x double> %3269, zeroinitializer
  %3271 = select <8 x i1> %3250, <8 x i1> %3270, <8 x i1> zeroinitializer
  %3272 = select <8 x i1> %3271, <8 x i64> %3267, <8 x i64> zeroinitializer
  %3273 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3272)
  %3274 = icmp eq i64 %3273, 0
  br i1 %3274, label %3285, label %3275

3275:                                             ; preds = %3264
  %3276 = getelementptr inbounds nuw i8, ptr %3243, i64 6336
  %3277 = load <8 x double>, ptr %3276, align 64, !tbaa !26, !noalias !117
  %3278 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3254, <8 x double> %3277, <8 x double> %3245)
  %3279 = fcmp ogt <8 x double> %3278, zeroinitializer
  %3280 = select <8 x i1> %3279, <8 x double> %3278, <8 x double> zeroinitializer
  %3281 = fmul <8 x double> %3239, %3280
  %3282 = icmp eq <8 x i64> %3272, zeroinitializer
  %3283 = select <8 x i1> %3282, <8 x double> %3257, <8 x double> %3281
  %3284 = select <8 x i1> %3282, <8 x double> %3265, <8 x double> %3277
  br label %3285

3285:                                             ; preds = %3275, %3264
  %3286 = phi <8 x double> [ %3284, %3275 ], [ %3265, %3264 ]
  %3287 = phi <8 x double> [ %3283, %3275 ], [ %3257, %3264 ]
  %3288 = getelementptr inbounds nuw i8, ptr %3243, i64 6016
  store <8 x double> %3287, ptr %3288, align 64, !tbaa !26, !noalias !117
  %3289 = getelementptr inbounds nuw i8, ptr %3243, i64 5952
  store <8 x double> %3286, ptr %3289, align 64, !tbaa !26, !noalias !117
  %3290 = getelementptr inbounds nuw i8, ptr %3243, i64 6080
  store <8 x double> zeroinitializer, ptr %3290, align 64, !tbaa !26, !noalias !117
  %3291 = load i64, ptr %119, align 16, !tbaa !21, !noalias !117
  %3292 = sitofp i64 %3291 to double
  %3293 = insertelement <8 x double> poison, double %3292, i64 0
  %3294 = shufflevector <8 x double> %3293, <8 x double> poison, <8 x i32> zeroinitializer
  %3295 = getelementptr inbounds nuw i8, ptr %3243, i64 6144
  store <8 x double> %3294, ptr %3295, align 64, !tbaa !26, !noalias !117
  %3296 = getelementptr inbounds nuw i8, ptr %3243, i64 7872
  %3297 = getelementptr inbounds nuw i8, ptr %3243, i64 8128
  %3298 = load <8 x double>, ptr %3297, align 64, !tbaa !26, !noalias !120
  %3299 = fcmp ole <8 x double> %2609, %3298
  %3300 = getelementptr inbounds nuw i8, ptr %3243, i64 8192
  %3301 = load <8 x double>, ptr %3300, align 64, !tbaa !26, !noalias !120
  %3302 = fcmp oge <8 x double> %2609, %3301
  %3303 = or <8 x i1> %3299, %3302
  %3304 = bitcast <8 x i1> %3303 to i8
  %3305 = icmp eq i8 %3304, 0
  br i1 %3305, label %3306, label %3309

3306:                                             ; preds = %3285
  %3307 = getelementptr inbounds nuw i8, ptr %3243, i64 8000
  %3308 = load <8 x double>, ptr %3307, align 64, !tbaa !26, !noalias !120
  br label %3431

3309:                                             ; preds = %3285
  %3310 = load i64, ptr %119, align 16, !tbaa !21, !noalias !123
  %3311 = sitofp i64 %3310 to double
  %3312 = insertelement <8 x double> poison, double %3311, i64 0
  %3313 = shufflevector <8 x double> %3312, <8 x double> poison, <8 x i32> zeroinitializer
  %3314 = icmp sgt i64 %3310, 0
  br i1 %3314, label %3315, label %3406

3315:                                             ; preds = %3309
  %3316 = sext <8 x i1> %3303 to <8 x i64>
  %3317 = getelementptr inbounds nuw i8, ptr %3243, i64 8632
  %3318 = load ptr, ptr %3317, align 8, !tbaa !87, !noalias !123
  %3319 = getelementptr inbounds nuw i8, ptr %3243, i64 8640
  %3320 = load ptr, ptr %3319, align 64, !tbaa !88, !noalias !123
  %3321 = getelementptr inbounds nuw i8, ptr %3243, i64 8512
  %3322 = load i64, ptr %3321, align 64, !tbaa !31, !noalias !123
  %3323 = getelementptr inbounds nuw i8, ptr %3243, i64 8656
  %3324 = getelementptr inbounds nuw i8, ptr %3243, i64 8648
  %3325 = getelementptr inbounds nuw i8, ptr %3243, i64 8664
  br label %3326

3326:                                             ; preds = %3315, %3374
  %3327 = phi <8 x i64> [ %3316, %3315 ], [ %3346, %3374 ]
  %3328 = phi i64 [ %3310, %3315 ], [ %3336, %3374 ]
  %3329 = phi <8 x double> [ splat (double 1.000000e+09), %3315 ], [ %3389, %3374 ]
  %3330 = phi <8 x double> [ zeroinitializer, %3315 ], [ %3393, %3374 ]
  %3331 = phi <8 x double> [ splat (double 1.000000e+09), %3315 ], [ %3371, %3374 ]
  %3332 = phi <8 x double> [ splat (double 1.000000e+00), %3315 ], [ %3370, %3374 ]
  %3333 = phi <8 x double> [ %3313, %3315 ], [ %3397, %3374 ]
  %3334 = phi <8 x double> [ zeroinitializer, %3315 ], [ %3386, %3374 ]
  %3335 = phi <8 x double> [ zeroinitializer, %3315 ], [ %3384, %3374 ]
  %3336 = add nsw i64 %3328, -1
  %3337 = getelementptr inbounds nuw <8 x double>, ptr %3318, i64 %3336
  %3338 = load <8 x double>, ptr %3337, align 64, !tbaa !26, !noalias !123
  %3339 = getelementptr inbounds nuw <8 x double>, ptr %3320, i64 %3336
  %3340 = load <8 x double>, ptr %3339, align 64, !tbaa !26, !noalias !123
  %3341 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3340, <8 x double> %2609, <8 x double> %3338)
  %3342 = fsub <8 x double> %3341, %2609
  %3343 = fcmp ogt <8 x double> %3342, splat (double 1.000000e-09)
  %3344 = select <8 x i1> %3343, <8 x i64> %3327, <8 x i64> zeroinitializer
  %3345 = icmp sgt i64 %3328, %3322
  %3346 = select i1 %3345, <8 x i64> %3344, <8 x i64> zeroinitializer
  %3347 = icmp slt i64 %3328, %3310
  br i1 %3347, label %3348, label %3360

3348:                                             ; preds = %3326
  %3349 = load ptr, ptr %3323, align 16, !tbaa !85, !noalias !123
  %3350 = getelementptr inbounds nuw <8 x double>, ptr %3349, i64 %3328
  %3351 = load <8 x double>, ptr %3350, align 64, !tbaa !26, !noalias !123
  %3352 = fmul <8 x double> %3342, %3351
  %3353 = icmp eq <8 x i64> %3346, %3327
  %3354 = select <8 x i1> %3353, <8 x double> zeroinitializer, <8 x double> %3352
  %3355 = fadd <8 x double> %3335, %3354
  %3356 = fadd <8 x double> %3340, splat (double -1.000000e+00)
  %3357 = fmul <8 x double> %3356, %3351
  %3358 = select <8 x i1> %3353, <8 x double> zeroinitializer, <8 x double> %3357
  %3359 = fadd <8 x double> %3334, %3358
  br label %3360

3360:                                             ; preds = %3348, %3326
  %3361 = phi <8 x double> [ %3355, %3348 ], [ %3335, %3326 ]
  %3362 = phi <8 x double> [ %3359, %3348 ], [ %3334, %3326 ]
  br i1 %3345, label %3363, label %3369

3363:                                             ; preds = %3360
  %3364 = fneg <8 x double> %3342
  %3365 = icmp eq <8 x i64> %3346, %3327
  %3366 = select <8 x i1> %3365, <8 x double> %3331, <8 x double> %3364
  %3367 = fsub <8 x double> splat (double 1.000000e+00), %3340
  %3368 = select <8 x i1> %3365, <8 x double> %3332, <8 x double> %3367
  br label %3369

3369:                                             ; preds = %3363, %3360
  %3370 = phi <8 x double> [ %3368, %3363 ], [ %3332, %3360 ]
  %3371 = phi <8 x double> [ %3366, %3363 ], [ %3331, %3360 ]
  %3372 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3346)
  %3373 = icmp eq i64 %3372, 0
  br i1 %3373, label %3399, label %3374

3374:                                             ; preds = %3369
  %3375 = load ptr, ptr %3324, align 8, !tbaa !84, !noalias !123
  %3376 = getelementptr inbounds nuw <8 x double>, ptr %3375, i64 %3336
  %3377 = load <8 x double>, ptr %3376, align 64, !tbaa !26, !noalias !123
  %3378 = load ptr, ptr %3325, align 8, !tbaa !86, !noalias !123
  %3379 = getelementptr inbounds nuw <8 x double>, ptr %3378, i64 %3336
  %3380 = load <8 x double>, ptr %3379, align 64, !tbaa !26, !noalias !123
  %3381 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3380, <8 x double> %2609, <8 x double> %3377)
  %3382 = icmp eq <8 x i64> %3346, zeroinitializer
  %3383 = select <8 x i1> %3382, <8 x double> zeroinitializer, <8 x double> %3381
  %3384 = fadd <8 x double> %3361, %3383
  %3385 = select <8 x i1> %3382, <8 x double> zeroinitializer, <8 x double> %3380
  %3386 = fadd <8 x double> %3362, %3385
  %3387 = fcmp olt <8 x double> %3329, %3342
  %3388 = select <8 x i1> %3382, <8 x i1> splat (i1 true), <8 x i1> %3387
  %3389 = select <8 x i1> %3388, <8 x double> %3329, <8 x double> %3342
  %3390 = fsub <8 x double> splat (double 1.000000e+00), %3340
  %3391 = fcmp ogt <8 x double> %3330, %3390
  %3392 = select <8 x i1> %3382, <8 x i1> splat (i1 true), <8 x i1> %3391
  %3393 = select <8 x i1> %3392, <8 x double> %3330, <8 x double> %3390
  %3394 = uitofp nneg i64 %3336 to double
  %3395 = insertelement <8 x double> poison, double %3394, i64 0
  %3396 = shufflevector <8 x double> %3395, <8 x double> poison, <8 x i32> zeroinitializer
  %3397 = select <8 x i1> %3382, <8 x double> %3333, <8 x double> %3396
  %3398 = icmp samesign ugt i64 %3328, 1
  br i1 %3398, label %3326, label %3399, !llvm.loop !115

3399:                                             ; preds = %3369, %3374
  %3400 = phi <8 x double> [ %3397, %3374 ], [ %3333, %3369 ]
  %3401 = phi <8 x double> [ %3393, %3374 ], [ %3330, %3369 ]
  %3402 = phi <8 x double> [ %3389, %3374 ], [ %3329, %3369 ]
  %3403 = phi <8 x double> [ %3384, %3374 ], [ %3361, %3369 ]
  %3404 = phi <8 x double> [ %3386, %3374 ], [ %3362, %3369 ]
  %3405 = fdiv <8 x double> %3371, %3370
  br label %3406

3406:                                             ; preds = %3399, %3309
  %3407 = phi <8 x double> [ %3313, %3309 ], [ %3400, %3399 ]
  %3408 = phi <8 x double> [ zeroinitializer, %3309 ], [ %3401, %3399 ]
  %3409 = phi <8 x double> [ splat (double 1.000000e+09), %3309 ], [ %3402, %3399 ]
  %3410 = phi <8 x double> [ zeroinitializer, %3309 ], [ %3403, %3399 ]
  %3411 = phi <8 x double> [ zeroinitializer, %3309 ], [ %3404, %3399 ]
  %3412 = phi <8 x double> [ splat (double 1.000000e+09), %3309 ], [ %3405, %3399 ]
  %3413 = fsub <8 x double> %2609, %3412
  %3414 = fcmp ogt <8 x double> %3408, splat (double 1.000000e-09)
  %3415 = select <8 x i1> %3414, <8 x double> %3408, <8 x double> splat (double 1.000000e-09)
  %3416 = fdiv <8 x double> %3409, %3415
  %3417 = fadd <8 x double> %2609, %3416
  %3418 = load <8 x double>, ptr %3296, align 64, !tbaa !26, !noalias !120
  %3419 = select <8 x i1> %3303, <8 x double> %3410, <8 x double> %3418
  store <8 x double> %3419, ptr %3296, align 64, !tbaa !26, !noalias !120
  %3420 = getelementptr inbounds nuw i8, ptr %3243, i64 7936
  %3421 = load <8 x double>, ptr %3420, align 64, !tbaa !26, !noalias !120
  %3422 = select <8 x i1> %3303, <8 x double> %3411, <8 x double> %3421
  store <8 x double> %3422, ptr %3420, align 64, !tbaa !26, !noalias !120
  %3423 = getelementptr inbounds nuw i8, ptr %3243, i64 8000
  %3424 = load <8 x double>, ptr %3423, align 64, !tbaa !26, !noalias !120
  %3425 = select <8 x i1> %3303, <8 x double> %3407, <8 x double> %3424
  store <8 x double> %3425, ptr %3423, align 64, !tbaa !26, !noalias !120
  %3426 = getelementptr inbounds nuw i8, ptr %3243, i64 8064
  %3427 = load <8 x double>, ptr %3426, align 64, !tbaa !26, !noalias !120
  %3428 = select <8 x i1> %3303, <8 x double> %2609, <8 x double> %3427
  store <8 x double> %3428, ptr %3426, align 64, !tbaa !26, !noalias !120
  %3429 = select <8 x i1> %3303, <8 x double> %3413, <8 x double> %3298
  store <8 x double> %3429, ptr %3297, align 64, !tbaa !26, !noalias !120
  %3430 = select <8 x i1> %3303, <8 x double> %3417, <8 x double> %3301
  store <8 x double> %3430, ptr %3300, align 64, !tbaa !26, !noalias !120
  br label %3431

3431:                                             ; preds = %3306, %3406
  %3432 = phi <8 x double> [ %3308, %3306 ], [ %3425, %3406 ]
  %3433 = load i64, ptr %119, align 16, !tbaa !21, !noalias !117
  %3434 = sitofp i64 %3433 to double
  %3435 = insertelement <8 x double> poison, double %3434, i64 0
  %3436 = shufflevector <8 x double> %3435, <8 x double> poison, <8 x i32> zeroinitializer
  %3437 = fcmp olt <8 x double> %3432, %3436
  %3438 = and <8 x i1> %3250, %3437
  %3439 = bitcast <8 x i1> %3438 to i8
  %3440 = icmp eq i8 %3439, 0
  br i1 %3440, label %3502, label %3441

3441:                                             ; preds = %3431
  %3442 = getelementptr inbounds nuw i8, ptr %3243, i64 7936
  %3443 = load <8 x double>, ptr %3442, align 64, !tbaa !26, !noalias !120
  %3444 = getelementptr inbounds nuw i8, ptr %3243, i64 8064
  %3445 = load <8 x double>, ptr %3444, align 64, !tbaa !26, !noalias !120
  %3446 = fsub <8 x double> %2609, %3445
  %3447 = load <8 x double>, ptr %3296, align 64, !tbaa !26, !noalias !120
  %3448 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3443, <8 x double> %3446, <8 x double> %3447)
  %3449 = getelementptr inbounds nuw i8, ptr %3243, i64 6464
  %3450 = load <8 x double>, ptr %3449, align 64, !tbaa !26, !noalias !117
  %3451 = getelementptr inbounds nuw i8, ptr %3243, i64 5888
  %3452 = load <8 x double>, ptr %3451, align 64, !tbaa !26, !noalias !117
  %3453 = getelementptr inbounds nuw i8, ptr %3243, i64 7424
  %3454 = load <8 x double>, ptr %3453, align 64, !tbaa !26, !noalias !117
  %3455 = fneg <8 x double> %3454
  %3456 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3450, <8 x double> %3452, <8 x double> %3455)
  %3457 = getelementptr inbounds nuw i8, ptr %3243, i64 7360
  %3458 = load <8 x double>, ptr %3457, align 64, !tbaa !26, !noalias !117
  %3459 = fadd <8 x double> %3450, %3458
  %3460 = getelementptr inbounds nuw i8, ptr %3243, i64 8320
  %3461 = load <8 x i64>, ptr %3460, align 64, !tbaa !26, !noalias !117
  %3462 = getelementptr inbounds nuw i8, ptr %3243, i64 8736
  %3463 = load ptr, ptr %3462, align 32, !tbaa !93, !noalias !117
  %3464 = load <8 x double>, ptr %3463, align 64, !tbaa !26, !noalias !117
  %3465 = fmul <8 x double> %3450, %3464
  %3466 = icmp eq <8 x i64> %3461, zeroinitializer
  %3467 = select <8 x i1> %3466, <8 x double> %3456, <8 x double> %3465
  %3468 = getelementptr inbounds nuw i8, ptr %3243, i64 8744
  %3469 = load ptr, ptr %3468, align 8, !tbaa !94, !noalias !117
  %3470 = load <8 x double>, ptr %3469, align 64, !tbaa !26, !noalias !117
  %3471 = fsub <8 x double> splat (double 1.000000e+00), %3470
  %3472 = fmul <8 x double> %3450, %3471
  %3473 = select <8 x i1> %3466, <8 x double> %3459, <8 x double> %3472
  %3474 = fneg <8 x double> %3473
  %3475 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3474, <8 x double> %2609, <8 x double> %3467)
  %3476 = fcmp ogt <8 x double> %3448, zeroinitializer
  %3477 = fcmp oge <8 x double> %3475, zeroinitializer
  %3478 = and <8 x i1> %3476, %3477
  %3479 = and <8 x i1> %3438, %3478
  %3480 = sext <8 x i1> %3479 to <8 x i64>
  %3481 = xor <8 x i64> %3480, splat (i64 -1)
  %3482 = fadd <8 x double> %3448, %3475
  %3483 = fcmp ogt <8 x double> %3482, zeroinitializer
  %3484 = and <8 x i1> %3438, %3483
  %3485 = select <8 x i1> %3484, <8 x i64> %3481, <8 x i64> zeroinitializer
  %3486 = or <8 x i64> %3485, %3480
  %3487 = fmul <8 x double> %3239, %3475
  %3488 = select <8 x i1> %3479, <8 x double> %3487, <8 x double> zeroinitializer
  %3489 = icmp eq <8 x i64> %3486, zeroinitializer
  %3490 = select <8 x i1> %3489, <8 x double> %3287, <8 x double> %3488
  store <8 x double> %3490, ptr %3288, align 64, !tbaa !26, !noalias !117
  %3491 = select <8 x i1> %3489, <8 x double> %3286, <8 x double> %2609
  store <8 x double> %3491, ptr %3289, align 64, !tbaa !26, !noalias !117
  %3492 = fmul <8 x double> %3239, %3448
  %3493 = fmul <8 x double> %3239, %3482
  %3494 = icmp eq <8 x i64> %3485, zeroinitializer
  %3495 = select <8 x i1> %3494, <8 x double> zeroinitializer, <8 x double> %3493
  %3496 = select <8 x i1> %3479, <8 x double> %3492, <8 x double> %3495
  store <8 x double> %3496, ptr %3290, align 64, !tbaa !26, !noalias !117
  %3497 = load i64, ptr %119, align 16, !tbaa !21, !noalias !117
  %3498 = sitofp i64 %3497 to double
  %3499 = insertelement <8 x double> poison, double %3498, i64 0
  %3500 = shufflevector <8 x double> %3499, <8 x double> poison, <8 x i32> zeroinitializer
  %3501 = select <8 x i1> %3489, <8 x double> %3500, <8 x double> %3432
  store <8 x double> %3501, ptr %3295, align 64, !tbaa !26, !noalias !117
  br label %3502

3502:                                             ; preds = %3431, %3441
  %3503 = add nuw nsw i64 %3241, 1
  %3504 = load i64, ptr %157, align 8, !tbaa !20, !noalias !117
  %3505 = icmp slt i64 %3503, %3504
  br i1 %3505, label %3240, label %3506, !llvm.loop !116

3506:                                             ; preds = %3502, %3198
  %3507 = phi i64 [ %3234, %3198 ], [ %3504, %3502 ]
  %3508 = icmp sgt i64 %3507, 0
  br i1 %3508, label %3671, label %3509

3509:                                             ; preds = %3506, %3235
  %3510 = load <8 x double>, ptr %166, align 64, !tbaa !26
  br label %3516

3511:                                             ; preds = %3743
  %3512 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3513 = icmp sgt i64 %3767, 0
  br i1 %3513, label %3514, label %3516

3514:                                             ; preds = %3511
  %3515 = load ptr, ptr %130, align 8, !tbaa !28
  br label %3649

3516:                                             ; preds = %3649, %3509, %3511
  %3517 = phi <8 x double> [ %3512, %3511 ], [ %3510, %3509 ], [ %3512, %3649 ]
  %3518 = phi <8 x double> [ zeroinitializer, %3511 ], [ zeroinitializer, %3509 ], [ %3668, %3649 ]
  %3519 = phi <8 x double> [ zeroinitializer, %3511 ], [ zeroinitializer, %3509 ], [ %3663, %3649 ]
  %3520 = extractelement <8 x double> %3519, i64 0
  %3521 = extractelement <8 x double> %3519, i64 1
  %3522 = fadd double %3520, %3521
  %3523 = extractelement <8 x double> %3519, i64 2
  %3524 = fadd double %3522, %3523
  %3525 = extractelement <8 x double> %3519, i64 3
  %3526 = fadd double %3524, %3525
  %3527 = extractelement <8 x double> %3519, i64 4
  %3528 = fadd double %3526, %3527
  %3529 = extractelement <8 x double> %3519, i64 5
  %3530 = fadd double %3528, %3529
  %3531 = extractelement <8 x double> %3519, i64 6
  %3532 = fadd double %3530, %3531
  %3533 = extractelement <8 x double> %3519, i64 7
  %3534 = fadd double %3532, %3533
  %3535 = insertelement <8 x double> poison, double %3534, i64 0
  %3536 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %3537 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3538 = fsub <8 x double> %3517, %3537
  %3539 = extractelement <8 x double> %3518, i64 0
  %3540 = extractelement <8 x double> %3518, i64 1
  %3541 = fadd double %3539, %3540
  %3542 = extractelement <8 x double> %3518, i64 2
  %3543 = fadd double %3541, %3542
  %3544 = extractelement <8 x double> %3518, i64 3
  %3545 = fadd double %3543, %3544
  %3546 = extractelement <8 x double> %3518, i64 4
  %3547 = fadd double %3545, %3546
  %3548 = extractelement <8 x double> %3518, i64 5
  %3549 = fadd double %3547, %3548
  %3550 = extractelement <8 x double> %3518, i64 6
  %3551 = fadd double %3549, %3550
  %3552 = extractelement <8 x double> %3518, i64 7
  %3553 = fadd double %3551, %3552
  %3554 = shufflevector <8 x double> %3535, <8 x double> poison, <8 x i32> zeroinitializer
  %3555 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3536, <8 x double> %3538, <8 x double> %3554)
  %3556 = insertelement <8 x double> poison, double %3553, i64 0
  %3557 = shufflevector <8 x double> %3556, <8 x double> poison, <8 x i32> zeroinitializer
  %3558 = fadd <8 x double> %3536, %3557
  store <8 x double> %3555, ptr %202, align 64, !tbaa !26
  %3559 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %3560 = fcmp ule <8 x double> %3559, zeroinitializer
  %3561 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %3562 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3559, <8 x double> splat (double 5.000000e-01), <8 x double> %3561)
  %3563 = fsub <8 x double> %3562, %3517
  %3564 = fcmp ogt <8 x double> %3559, splat (double 1.000000e-30)
  %3565 = select <8 x i1> %3564, <8 x double> %3559, <8 x double> splat (double 1.000000e-30)
  %3566 = fdiv <8 x double> %3563, %3565
  %3567 = fcmp ogt <8 x double> %3566, zeroinitializer
  %3568 = select <8 x i1> %3567, <8 x double> %3566, <8 x double> zeroinitializer
  %3569 = fcmp olt <8 x double> %3568, splat (double 1.000000e+00)
  %3570 = select <8 x i1> %3569, <8 x double> %3568, <8 x double> splat (double 1.000000e+00)
  %3571 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %3572 = load <8 x i64>, ptr %144, align 64, !tbaa !26
  %3573 = icmp eq <8 x i64> %3572, zeroinitializer
  %3574 = select <8 x i1> %3573, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %3575 = select <8 x i1> %3560, <8 x double> %3574, <8 x double> %3570
  %3576 = fmul <8 x double> %3571, %3575
  %3577 = fcmp ule <8 x double> %3576, zeroinitializer
  %3578 = fcmp uge <8 x double> %3576, %3571
  %3579 = or <8 x i1> %3577, %3578
  %3580 = or <8 x i1> %3560, %3579
  %3581 = fdiv <8 x double> %3571, %3565
  %3582 = select <8 x i1> %3580, <8 x double> zeroinitializer, <8 x double> %3581
  %3583 = fadd <8 x double> %3558, %3582
  %3584 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %3585 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3586 = fdiv <8 x double> splat (double 2.000000e+00), %3585
  %3587 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %3588 = icmp eq <8 x i64> %3584, zeroinitializer
  %3589 = select <8 x i1> %3588, <8 x double> %3587, <8 x double> %3586
  %3590 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %3591 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %3592 = fmul <8 x double> %3590, %3591
  %3593 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %3594 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %3595 = fmul <8 x double> %3594, splat (double 5.000000e-01)
  %3596 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3595, <8 x double> %3590, <8 x double> %3593)
  %3597 = load <8 x double>, ptr %150, align 64, !tbaa !26
  %3598 = fmul <8 x double> %3590, %3597
  %3599 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3592, <8 x double> %3596, <8 x double> %3598)
  %3600 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3601 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %3602 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %3603 = fmul <8 x double> %3591, %3602
  %3604 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3595, <8 x double> %3602, <8 x double> %3593)
  %3605 = fmul <8 x double> %3597, %3602
  %3606 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3603, <8 x double> %3604, <8 x double> %3605)
  %3607 = fmul <8 x double> %3601, %3606
  %3608 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3600, <8 x double> %3599, <8 x double> %3607)
  %3609 = fmul <8 x double> %3517, %3591
  %3610 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3595, <8 x double> %3517, <8 x double> %3593)
  %3611 = fmul <8 x double> %3517, %3597
  %3612 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3609, <8 x double> %3610, <8 x double> %3611)
  %3613 = fneg <8 x double> %3589
  %3614 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %3615 = fneg <8 x double> %3614
  %3616 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3613, <8 x double> %3599, <8 x double> %3615)
  %3617 = select <8 x i1> %3588, <8 x double> %3608, <8 x double> %3616
  %3618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3589, <8 x double> %3612, <8 x double> %3617)
  %3619 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3594, <8 x double> %3517, <8 x double> %3593)
  %3620 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3591, <8 x double> %3619, <8 x double> %3597)
  %3621 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %3622 = fcmp une <8 x double> %3621, zeroinitializer
  %3623 = fadd <8 x double> %3555, %3618
  %3624 = fsub <8 x double> %3623, %3576
  %3625 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3589, <8 x double> %3620, <8 x double> %3583)
  %3626 = fdiv <8 x double> %3624, %3625
  %3627 = fsub <8 x double> %3517, %3626
  %3628 = select <8 x i1> %3622, <8 x double> %3517, <8 x double> %3627
  store <8 x double> %3628, ptr %166, align 64, !tbaa !26
  %3629 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %3630 = fneg <8 x double> %3600
  %3631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3630, <8 x double> %3629, <8 x double> %3576)
  %3632 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %3633 = fneg <8 x double> %3601
  %3634 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3633, <8 x double> %3632, <8 x double> %3631)
  %3635 = fdiv <8 x double> %3634, %3587
  %3636 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3637 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3630, <8 x double> %3636, <8 x double> %3555)
  %3638 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %3639 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3633, <8 x double> %3638, <8 x double> %3637)
  %3640 = fdiv <8 x double> %3639, %3587
  %3641 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3576, <8 x double> %3585, <8 x double> %3629)
  %3642 = select <8 x i1> %3588, <8 x double> %3635, <8 x double> %3641
  %3643 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3644 = select <8 x i1> %3622, <8 x double> %3643, <8 x double> %3642
  store <8 x double> %3644, ptr %207, align 64, !tbaa !26
  %3645 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %3646 = select <8 x i1> %3622, <8 x double> %3645, <8 x double> %3640
  store <8 x double> %3646, ptr %208, align 64, !tbaa !26
  %3647 = load i64, ptr %157, align 8, !tbaa !20
  %3648 = icmp sgt i64 %3647, 0
  br i1 %3648, label %3769, label %4062

3649:                                             ; preds = %3514, %3649
  %3650 = phi <8 x double> [ zeroinitializer, %3514 ], [ %3663, %3649 ]
  %3651 = phi <8 x double> [ zeroinitializer, %3514 ], [ %3668, %3649 ]
  %3652 = phi i64 [ 0, %3514 ], [ %3669, %3649 ]
  %3653 = getelementptr inbounds nuw %struct.Piece, ptr %3515, i64 %3652
  %3654 = getelementptr inbounds nuw i8, ptr %3653, i64 8448
  %3655 = load <8 x i64>, ptr %3654, align 64, !tbaa !26
  %3656 = getelementptr inbounds nuw i8, ptr %3653, i64 128
  %3657 = load <8 x double>, ptr %3656, align 64, !tbaa !26
  %3658 = getelementptr inbounds nuw i8, ptr %3653, i64 6720
  %3659 = load <8 x double>, ptr %3658, align 64, !tbaa !26
  %3660 = fmul <8 x double> %3657, %3659
  %3661 = icmp eq <8 x i64> %3655, zeroinitializer
  %3662 = select <8 x i1> %3661, <8 x double> %3660, <8 x double> zeroinitializer
  %3663 = fadd <8 x double> %3650, %3662
  %3664 = getelementptr inbounds nuw i8, ptr %3653, i64 6592
  %3665 = load <8 x double>, ptr %3664, align 64, !tbaa !26
  %3666 = fmul <8 x double> %3657, %3665
  %3667 = select <8 x i1> %3661, <8 x double> %3666, <8 x double> zeroinitializer
  %3668 = fadd <8 x double> %3651, %3667
  %3669 = add nuw nsw i64 %3652, 1
  %3670 = icmp eq i64 %3669, %3767
  br i1 %3670, label %3516, label %3649, !llvm.loop !126

3671:                                             ; preds = %3506, %3743
  %3672 = phi i64 [ %3766, %3743 ], [ 0, %3506 ]
  %3673 = load ptr, ptr %130, align 8, !tbaa !28
  %3674 = getelementptr inbounds nuw %struct.Piece, ptr %3673, i64 %3672
  %3675 = getelementptr inbounds nuw i8, ptr %3674, i64 5952
  %3676 = load <8 x double>, ptr %3675, align 64, !tbaa !26
  %3677 = getelementptr inbounds nuw i8, ptr %3674, i64 6144
  %3678 = load <8 x double>, ptr %3677, align 64, !tbaa !26
  %3679 = getelementptr inbounds nuw i8, ptr %3674, i64 8632
  %3680 = load ptr, ptr %3679, align 8, !tbaa !87
  %3681 = getelementptr inbounds nuw i8, ptr %3674, i64 8640
  %3682 = load ptr, ptr %3681, align 64, !tbaa !88
  %3683 = getelementptr inbounds nuw i8, ptr %3674, i64 8584
  %3684 = load ptr, ptr %3683, align 8, !tbaa !58
  %3685 = load i64, ptr %119, align 16, !tbaa !21
  %3686 = icmp sgt i64 %3685, 0
  br i1 %3686, label %3702, label %3687

3687:                                             ; preds = %3702, %3671
  %3688 = getelementptr inbounds nuw i8, ptr %3674, i64 8320
  %3689 = load <8 x i64>, ptr %3688, align 64, !tbaa !26
  %3690 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3689)
  %3691 = icmp eq i64 %3690, 0
  %3692 = load i64, ptr %120, align 8, !tbaa !22
  %3693 = icmp sgt i64 %3692, 0
  br i1 %3691, label %3699, label %3694

3694:                                             ; preds = %3687
  br i1 %3693, label %3695, label %3743

3695:                                             ; preds = %3694
  %3696 = getelementptr inbounds nuw i8, ptr %3674, i64 8736
  %3697 = getelementptr inbounds nuw i8, ptr %3674, i64 8744
  %3698 = getelementptr inbounds nuw i8, ptr %3674, i64 8704
  br label %3718

3699:                                             ; preds = %3687
  br i1 %3693, label %3700, label %3743

3700:                                             ; preds = %3699
  %3701 = getelementptr inbounds nuw i8, ptr %3674, i64 8704
  br label %3736

3702:                                             ; preds = %3671, %3702
  %3703 = phi <8 x double> [ %3715, %3702 ], [ %3676, %3671 ]
  %3704 = phi i64 [ %3705, %3702 ], [ %3685, %3671 ]
  %3705 = add nsw i64 %3704, -1
  %3706 = uitofp nneg i64 %3705 to double
  %3707 = insertelement <8 x double> poison, double %3706, i64 0
  %3708 = shufflevector <8 x double> %3707, <8 x double> poison, <8 x i32> zeroinitializer
  %3709 = fcmp ugt <8 x double> %3678, %3708
  %3710 = getelementptr inbounds nuw <8 x double>, ptr %3680, i64 %3705
  %3711 = load <8 x double>, ptr %3710, align 64, !tbaa !26
  %3712 = getelementptr inbounds nuw <8 x double>, ptr %3682, i64 %3705
  %3713 = load <8 x double>, ptr %3712, align 64, !tbaa !26
  %3714 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3713, <8 x double> %3703, <8 x double> %3711)
  %3715 = select <8 x i1> %3709, <8 x double> %3714, <8 x double> %3676
  %3716 = getelementptr inbounds nuw <8 x double>, ptr %3684, i64 %3705
  store <8 x double> %3715, ptr %3716, align 64, !tbaa !26
  %3717 = icmp samesign ugt i64 %3704, 1
  br i1 %3717, label %3702, label %3687, !llvm.loop !127

3718:                                             ; preds = %3695, %3718
  %3719 = phi i64 [ 0, %3695 ], [ %3733, %3718 ]
  %3720 = phi <8 x double> [ %3676, %3695 ], [ %3730, %3718 ]
  %3721 = load <8 x i64>, ptr %3688, align 64, !tbaa !26
  %3722 = load ptr, ptr %3696, align 32, !tbaa !93
  %3723 = getelementptr inbounds nuw <8 x double>, ptr %3722, i64 %3719
  %3724 = load <8 x double>, ptr %3723, align 64, !tbaa !26
  %3725 = load ptr, ptr %3697, align 8, !tbaa !94
  %3726 = getelementptr inbounds nuw <8 x double>, ptr %3725, i64 %3719
  %3727 = load <8 x double>, ptr %3726, align 64, !tbaa !26
  %3728 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3727, <8 x double> %3720, <8 x double> %3724)
  %3729 = icmp eq <8 x i64> %3721, zeroinitializer
  %3730 = select <8 x i1> %3729, <8 x double> %3676, <8 x double> %3728
  %3731 = load ptr, ptr %3698, align 64, !tbaa !128
  %3732 = getelementptr inbounds nuw <8 x double>, ptr %3731, i64 %3719
  store <8 x double> %3730, ptr %3732, align 64, !tbaa !26
  %3733 = add nuw nsw i64 %3719, 1
  %3734 = load i64, ptr %120, align 8, !tbaa !22
  %3735 = icmp slt i64 %3733, %3734
  br i1 %3735, label %3718, label %3743, !llvm.loop !129

3736:                                             ; preds = %3700, %3736
  %3737 = phi i64 [ 0, %3700 ], [ %3740, %3736 ]
  %3738 = load ptr, ptr %3701, align 64, !tbaa !128
  %3739 = getelementptr inbounds nuw <8 x double>, ptr %3738, i64 %3737
  store <8 x double> %3676, ptr %3739, align 64, !tbaa !26
  %3740 = add nuw nsw i64 %3737, 1
  %3741 = load i64, ptr %120, align 8, !tbaa !22
  %3742 = icmp slt i64 %3740, %3741
  br i1 %3742, label %3736, label %3743, !llvm.loop !130

3743:                                             ; preds = %3718, %3736, %3694, %3699
  %3744 = phi <8 x double> [ %3676, %3699 ], [ %3676, %3694 ], [ %3676, %3736 ], [ %3730, %3718 ]
  %3745 = load <8 x i64>, ptr %3688, align 64, !tbaa !26
  %3746 = getelementptr inbounds nuw i8, ptr %3674, i64 6656
  %3747 = load <8 x double>, ptr %3746, align 64, !tbaa !26
  %3748 = icmp eq <8 x i64> %3745, zeroinitializer
  %3749 = select <8 x i1> %3748, <8 x double> zeroinitializer, <8 x double> %3747
  %3750 = fsub <8 x double> splat (double 1.000000e+00), %3749
  %3751 = getelementptr inbounds nuw i8, ptr %3674, i64 5888
  %3752 = load <8 x double>, ptr %3751, align 64, !tbaa !26
  %3753 = fmul <8 x double> %3749, %3752
  %3754 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3750, <8 x double> %3744, <8 x double> %3753)
  %3755 = getelementptr inbounds nuw i8, ptr %3674, i64 6848
  store <8 x double> %3754, ptr %3755, align 64, !tbaa !26
  %3756 = getelementptr inbounds nuw i8, ptr %3674, i64 6592
  %3757 = load <8 x double>, ptr %3756, align 64, !tbaa !26
  %3758 = fsub <8 x double> %3752, %3744
  %3759 = fmul <8 x double> %3758, %3757
  %3760 = getelementptr inbounds nuw i8, ptr %3674, i64 6720
  store <8 x double> %3759, ptr %3760, align 64, !tbaa !26
  %3761 = getelementptr inbounds nuw i8, ptr %3674, i64 3200
  %3762 = load <8 x double>, ptr %3761, align 64, !tbaa !26
  %3763 = fdiv <8 x double> %3759, %3762
  %3764 = fsub <8 x double> %3752, %3763
  %3765 = getelementptr inbounds nuw i8, ptr %3674, i64 6784
  store <8 x double> %3764, ptr %3765, align 64, !tbaa !26
  %3766 = add nuw nsw i64 %3672, 1
  %3767 = load i64, ptr %157, align 8, !tbaa !20
  %3768 = icmp slt i64 %3766, %3767
  br i1 %3768, label %3671, label %3511, !llvm.loop !131

3769:                                             ; preds = %3516, %3996
  %3770 = phi i64 [ %4059, %3996 ], [ 0, %3516 ]
  %3771 = phi <8 x double> [ %4058, %3996 ], [ zeroinitializer, %3516 ]
  %3772 = load ptr, ptr %130, align 8, !tbaa !28
  %3773 = getelementptr inbounds nuw %struct.Piece, ptr %3772, i64 %3770
  %3774 = getelementptr inbounds nuw i8, ptr %3773, i64 6016
  %3775 = load <8 x double>, ptr %3774, align 64, !tbaa !26
  %3776 = getelementptr inbounds nuw i8, ptr %3773, i64 6080
  %3777 = load <8 x double>, ptr %3776, align 64, !tbaa !26
  %3778 = fadd <8 x double> %3775, %3777
  %3779 = getelementptr inbounds nuw i8, ptr %3773, i64 5952
  %3780 = load <8 x double>, ptr %3779, align 64, !tbaa !26
  %3781 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %3782 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3781, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3783 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3781, <8 x double> %3782, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3784 = getelementptr inbounds nuw i8, ptr %3773, i64 7168
  %3785 = load <8 x double>, ptr %3784, align 64, !tbaa !26
  %3786 = getelementptr inbounds nuw i8, ptr %3773, i64 1280
  %3787 = load <8 x double>, ptr %3786, align 64, !tbaa !26
  %3788 = fmul <8 x double> %3785, %3787
  %3789 = getelementptr inbounds nuw i8, ptr %3773, i64 6848
  %3790 = load <8 x double>, ptr %3789, align 64, !tbaa !26
  %3791 = fsub <8 x double> %3790, %3780
  %3792 = fmul <8 x double> %3788, %3791
  %3793 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3783, <8 x double> %3778, <8 x double> %3792)
  %3794 = getelementptr inbounds nuw i8, ptr %3773, i64 5696
  %3795 = load <8 x double>, ptr %3794, align 64, !tbaa !26, !noalias !132
  %3796 = getelementptr inbounds nuw i8, ptr %3773, i64 4160
  %3797 = load <8 x double>, ptr %3796, align 64, !tbaa !26, !noalias !132
  %3798 = fneg <8 x double> %3795
  %3799 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3798, <8 x double> %3797, <8 x double> %3778)
  %3800 = getelementptr inbounds nuw i8, ptr %3773, i64 5760
  %3801 = load <8 x double>, ptr %3800, align 64, !tbaa !26, !noalias !132
  %3802 = getelementptr inbounds nuw i8, ptr %3773, i64 5056
  %3803 = load <8 x double>, ptr %3802, align 64, !tbaa !26, !noalias !132
  %3804 = fneg <8 x double> %3801
  %3805 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3804, <8 x double> %3803, <8 x double> %3799)
  %3806 = getelementptr inbounds nuw i8, ptr %3773, i64 5824
  %3807 = load <8 x double>, ptr %3806, align 64, !tbaa !26, !noalias !132
  %3808 = fmul <8 x double> %3805, %3807
  %3809 = getelementptr inbounds nuw i8, ptr %3773, i64 1600
  %3810 = load <8 x double>, ptr %3809, align 64, !tbaa !26, !noalias !132
  %3811 = fsub <8 x double> %3810, %3808
  %3812 = getelementptr inbounds nuw i8, ptr %3773, i64 4032
  %3813 = load <8 x double>, ptr %3812, align 64, !tbaa !26, !noalias !132
  %3814 = getelementptr inbounds nuw i8, ptr %3773, i64 7488
  %3815 = load <8 x double>, ptr %3814, align 64, !tbaa !26, !noalias !132
  %3816 = fsub <8 x double> %3813, %3815
  %3817 = getelementptr inbounds nuw i8, ptr %3773, i64 3904
  %3818 = load <8 x double>, ptr %3817, align 64, !tbaa !26, !noalias !132
  %3819 = getelementptr inbounds nuw i8, ptr %3773, i64 2944
  %3820 = load <8 x double>, ptr %3819, align 64, !tbaa !26, !noalias !132
  %3821 = getelementptr inbounds nuw i8, ptr %3773, i64 8320
  %3822 = load <8 x i64>, ptr %3821, align 64, !tbaa !26, !noalias !132
  %3823 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3822)
  %3824 = icmp eq i64 %3823, 0
  br i1 %3824, label %3958, label %3825

3825:                                             ; preds = %3769
  %3826 = fcmp ogt <8 x double> %3816, %3811
  %3827 = getelementptr inbounds nuw i8, ptr %3773, i64 7616
  %3828 = load <8 x double>, ptr %3827, align 64, !tbaa !26, !noalias !132
  %3829 = fcmp oeq <8 x double> %3828, zeroinitializer
  %3830 = select <8 x i1> %3829, <8 x i1> %3826, <8 x i1> zeroinitializer
  %3831 = select <8 x i1> %3830, <8 x i64> %3822, <8 x i64> zeroinitializer
  %3832 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3831)
  %3833 = icmp eq i64 %3832, 0
  br i1 %3833, label %3906, label %3834

3834:                                             ; preds = %3825
  %3835 = fsub <8 x double> %3816, %3811
  %3836 = getelementptr inbounds nuw i8, ptr %3773, i64 7808
  %3837 = load <8 x double>, ptr %3836, align 64, !tbaa !26, !noalias !132
  %3838 = fmul <8 x double> %3835, %3837
  %3839 = getelementptr inbounds nuw i8, ptr %3773, i64 8616
  %3840 = load ptr, ptr %3839, align 8, !tbaa !65, !noalias !132
  %3841 = load i64, ptr %119, align 16, !tbaa !21, !noalias !132
  %3842 = add nsw i64 %3841, -1
  %3843 = getelementptr inbounds <8 x double>, ptr %3840, i64 %3842
  %3844 = load <8 x double>, ptr %3843, align 64, !tbaa !26, !noalias !132
  %3845 = icmp sgt i64 %3841, 1
  br i1 %3845, label %3846, label %3898

3846:                                             ; preds = %3834
  %3847 = getelementptr inbounds nuw i8, ptr %3773, i64 8512
  %3848 = load i64, ptr %3847, align 64, !tbaa !31, !noalias !132
  %3849 = getelementptr inbounds nuw i8, ptr %3773, i64 4672
  %3850 = getelementptr inbounds nuw i8, ptr %3773, i64 1536
  %3851 = getelementptr inbounds nuw i8, ptr %3773, i64 8672
  br label %3852

3852:                                             ; preds = %3846, %3895
  %3853 = phi <8 x double> [ %3818, %3846 ], [ %3890, %3895 ]
  %3854 = phi i64 [ %3842, %3846 ], [ %3896, %3895 ]
  %3855 = phi <8 x double> [ %3844, %3846 ], [ %3878, %3895 ]
  %3856 = phi <8 x i64> [ %3831, %3846 ], [ %3882, %3895 ]
  %3857 = phi <8 x double> [ %3838, %3846 ], [ %3889, %3895 ]
  %3858 = icmp slt i64 %3854, %3848
  br i1 %3858, label %3859, label %3865

3859:                                             ; preds = %3852
  %3860 = load ptr, ptr %3851, align 32, !tbaa !73, !noalias !132
  %3861 = getelementptr inbounds nuw <8 x double>, ptr %3860, i64 %3854
  %3862 = load <8 x double>, ptr %3861, align 64, !tbaa !26, !noalias !132
  %3863 = load <8 x double>, ptr %3850, align 64, !tbaa !26, !noalias !132
  %3864 = fmul <8 x double> %3862, %3863
  br label %3873

3865:                                             ; preds = %3852
  %3866 = load <8 x double>, ptr %3849, align 64, !tbaa !26, !noalias !132
  %3867 = load <8 x double>, ptr %3850, align 64, !tbaa !26, !noalias !132
  %3868 = load ptr, ptr %3851, align 32, !tbaa !73, !noalias !132
  %3869 = getelementptr inbounds nuw <8 x double>, ptr %3868, i64 %3854
  %3870 = load <8 x double>, ptr %3869, align 64, !tbaa !26, !noalias !132
  %3871 = fsub <8 x double> %3866, %3867
  %3872 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3870, <8 x double> %3871, <8 x double> %3867)
  br label %3873

3873:                                             ; preds = %3865, %3859
  %3874 = phi <8 x double> [ %3864, %3859 ], [ %3872, %3865 ]
  %3875 = getelementptr inbounds nuw <8 x double>, ptr %3840, i64 %3854
  %3876 = load <8 x double>, ptr %3875, align 64, !tbaa !26, !noalias !132
  %3877 = icmp eq <8 x i64> %3856, zeroinitializer
  %3878 = select <8 x i1> %3877, <8 x double> %3855, <8 x double> %3876
  %3879 = fsub <8 x double> %3853, %3874
  %3880 = fmul <8 x double> %3879, %3878
  %3881 = fcmp olt <8 x double> %3880, %3857
  %3882 = select <8 x i1> %3881, <8 x i64> %3856, <8 x i64> zeroinitializer
  %3883 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3882)
  %3884 = icmp eq i64 %3883, 0
  br i1 %3884, label %3898, label %3885

3885:                                             ; preds = %3873
  %3886 = fneg <8 x double> %3878
  %3887 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3886, <8 x double> %3879, <8 x double> %3857)
  %3888 = icmp eq <8 x i64> %3882, zeroinitializer
  %3889 = select <8 x i1> %3888, <8 x double> %3857, <8 x double> %3887
  %3890 = select <8 x i1> %3888, <8 x double> %3853, <8 x double> %3874
  %3891 = icmp eq i64 %3854, 1
  br i1 %3891, label %3892, label %3895

3892:                                             ; preds = %3885
  %3893 = load <8 x double>, ptr %3840, align 64, !tbaa !26, !noalias !132
  %3894 = select <8 x i1> %3888, <8 x double> %3878, <8 x double> %3893
  br label %3898

3895:                                             ; preds = %3885
  %3896 = add nsw i64 %3854, -1
  %3897 = icmp sgt i64 %3854, 1
  br i1 %3897, label %3852, label %3898, !llvm.loop !74

3898:                                             ; preds = %3895, %3873, %3892, %3834
  %3899 = phi <8 x double> [ %3838, %3834 ], [ %3889, %3892 ], [ %3857, %3873 ], [ %3889, %3895 ]
  %3900 = phi <8 x double> [ %3818, %3834 ], [ %3890, %3892 ], [ %3853, %3873 ], [ %3890, %3895 ]
  %3901 = phi <8 x double> [ %3844, %3834 ], [ %3894, %3892 ], [ %3878, %3873 ], [ %3878, %3895 ]
  %3902 = fdiv <8 x double> %3899, %3901
  %3903 = fsub <8 x double> %3900, %3902
  %3904 = icmp eq <8 x i64> %3831, zeroinitializer
  %3905 = select <8 x i1> %3904, <8 x double> %3818, <8 x double> %3903
  br label %3906

3906:                                             ; preds = %3898, %3825
  %3907 = phi <8 x double> [ %3905, %3898 ], [ %3818, %3825 ]
  %3908 = getelementptr inbounds nuw i8, ptr %3773, i64 2624
  %3909 = load <8 x double>, ptr %3908, align 64, !tbaa !26, !noalias !132
  %3910 = getelementptr inbounds nuw i8, ptr %3773, i64 2688
  %3911 = load <8 x double>, ptr %3910, align 64, !tbaa !26, !noalias !132
  %3912 = getelementptr inbounds nuw i8, ptr %3773, i64 2752
  %3913 = load <8 x double>, ptr %3912, align 64, !tbaa !26, !noalias !132
  %3914 = getelementptr inbounds nuw i8, ptr %3773, i64 2560
  %3915 = load <8 x double>, ptr %3914, align 64, !tbaa !26, !noalias !132
  %3916 = load <8 x double>, ptr %3773, align 64, !tbaa !26, !noalias !132
  %3917 = fmul <8 x double> %3916, splat (double 5.000000e-04)
  br label %3918

3918:                                             ; preds = %3906, %3918
  %3919 = phi <8 x i64> [ splat (i64 -1), %3906 ], [ %3941, %3918 ]
  %3920 = phi i32 [ 0, %3906 ], [ %3942, %3918 ]
  %3921 = phi <8 x double> [ %3820, %3906 ], [ %3938, %3918 ]
  %3922 = fmul <8 x double> %3921, splat (double 3.000000e+00)
  %3923 = fmul <8 x double> %3922, %3913
  %3924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3911, <8 x double> splat (double 2.000000e+00), <8 x double> %3923)
  %3925 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3921, <8 x double> %3924, <8 x double> %3909)
  %3926 = fdiv <8 x double> splat (double 1.000000e+00), %3925
  %3927 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3921, <8 x double> %3913, <8 x double> %3911)
  %3928 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3921, <8 x double> %3927, <8 x double> %3909)
  %3929 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3921, <8 x double> %3928, <8 x double> %3915)
  %3930 = fsub <8 x double> %3929, %3907
  %3931 = fmul <8 x double> %3930, %3926
  %3932 = fmul <8 x double> %3931, %3931
  %3933 = fmul <8 x double> %3926, %3932
  %3934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3922, <8 x double> %3913, <8 x double> %3911)
  %3935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3933, <8 x double> %3934, <8 x double> %3931)
  %3936 = fsub <8 x double> %3921, %3935
  %3937 = icmp eq <8 x i64> %3919, zeroinitializer
  %3938 = select <8 x i1> %3937, <8 x double> %3921, <8 x double> %3936
  %3939 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3935)
  %3940 = fcmp oge <8 x double> %3939, %3917
  %3941 = select <8 x i1> %3940, <8 x i64> %3919, <8 x i64> zeroinitializer
  %3942 = add nuw nsw i32 %3920, 1
  %3943 = icmp samesign ult i32 %3920, 3
  %3944 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3941)
  %3945 = icmp ne i64 %3944, 0
  %3946 = select i1 %3943, i1 %3945, i1 false
  br i1 %3946, label %3918, label %3947, !llvm.loop !75

3947:                                             ; preds = %3918
  %3948 = fmul <8 x double> %3916, splat (double 2.800000e-01)
  %3949 = fcmp ogt <8 x double> %3938, %3948
  %3950 = select <8 x i1> %3949, <8 x double> %3938, <8 x double> %3948
  %3951 = fcmp olt <8 x double> %3950, %3916
  %3952 = select <8 x i1> %3951, <8 x double> %3950, <8 x double> %3916
  %3953 = icmp eq <8 x i64> %3822, zeroinitializer
  %3954 = select <8 x i1> %3953, <8 x double> %3820, <8 x double> %3952
  %3955 = fcmp olt <8 x double> %3816, %3811
  %3956 = select <8 x i1> %3953, <8 x i1> splat (i1 true), <8 x i1> %3955
  %3957 = select <8 x i1> %3956, <8 x double> %3816, <8 x double> %3811
  br label %3958

3958:                                             ; preds = %3947, %3769
  %3959 = phi <8 x double> [ %3957, %3947 ], [ %3816, %3769 ]
  %3960 = phi <8 x double> [ %3954, %3947 ], [ %3820, %3769 ]
  %3961 = phi <8 x double> [ %3907, %3947 ], [ %3818, %3769 ]
  %3962 = fsub <8 x double> %3811, %3959
  %3963 = fsub <8 x double> %3960, %3820
  %3964 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3963)
  %3965 = getelementptr inbounds nuw i8, ptr %3773, i64 3072
  %3966 = load <8 x double>, ptr %3965, align 64, !tbaa !26
  %3967 = fsub <8 x double> %3962, %3966
  %3968 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3967)
  %3969 = getelementptr inbounds nuw i8, ptr %3773, i64 7808
  %3970 = load <8 x double>, ptr %3969, align 64, !tbaa !26
  %3971 = fmul <8 x double> %3970, %3968
  %3972 = icmp eq <8 x i64> %3822, zeroinitializer
  %3973 = select <8 x i1> %3972, <8 x double> %3971, <8 x double> %3964
  br i1 %3824, label %3996, label %3974

3974:                                             ; preds = %3958
  %3975 = getelementptr inbounds nuw i8, ptr %3773, i64 7104
  %3976 = load <8 x double>, ptr %3975, align 64, !tbaa !26
  %3977 = fmul <8 x double> %3976, splat (double 2.000000e+00)
  %3978 = getelementptr inbounds nuw i8, ptr %3773, i64 384
  %3979 = load <8 x double>, ptr %3978, align 64, !tbaa !26
  %3980 = getelementptr inbounds nuw i8, ptr %3773, i64 448
  %3981 = load <8 x double>, ptr %3980, align 64, !tbaa !26
  %3982 = getelementptr inbounds nuw i8, ptr %3773, i64 512
  %3983 = load <8 x double>, ptr %3982, align 64, !tbaa !26
  %3984 = fmul <8 x double> %3780, %3983
  %3985 = fmul <8 x double> %3984, splat (double 0x3FD5555555555555)
  %3986 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3981, <8 x double> splat (double 5.000000e-01), <8 x double> %3985)
  %3987 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3780, <8 x double> %3986, <8 x double> %3979)
  %3988 = fmul <8 x double> %3780, %3987
  %3989 = getelementptr inbounds nuw i8, ptr %3773, i64 768
  %3990 = load <8 x double>, ptr %3989, align 64, !tbaa !26
  %3991 = fneg <8 x double> %3990
  %3992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3991, <8 x double> %3780, <8 x double> %3988)
  %3993 = fmul <8 x double> %3977, %3992
  %3994 = fsub <8 x double> %3793, %3993
  %3995 = select <8 x i1> %3972, <8 x double> %3793, <8 x double> %3994
  br label %3996

3996:                                             ; preds = %3958, %3974
  %3997 = phi <8 x double> [ %3995, %3974 ], [ %3793, %3958 ]
  %3998 = getelementptr inbounds nuw i8, ptr %3773, i64 3264
  store <8 x double> %3808, ptr %3998, align 64, !tbaa !26
  store <8 x double> %3962, ptr %3965, align 64, !tbaa !26
  %3999 = getelementptr inbounds nuw i8, ptr %3773, i64 3136
  store <8 x double> %3959, ptr %3999, align 64, !tbaa !26
  %4000 = getelementptr inbounds nuw i8, ptr %3773, i64 3008
  %4001 = load <8 x double>, ptr %4000, align 64, !tbaa !26
  %4002 = select <8 x i1> %3972, <8 x double> %4001, <8 x double> %3961
  store <8 x double> %4002, ptr %4000, align 64, !tbaa !26
  %4003 = select <8 x i1> %3972, <8 x double> %3820, <8 x double> %3960
  store <8 x double> %4003, ptr %3819, align 64, !tbaa !26
  %4004 = getelementptr inbounds nuw i8, ptr %3773, i64 3520
  store <8 x double> %3777, ptr %4004, align 64, !tbaa !26
  %4005 = getelementptr inbounds nuw i8, ptr %3773, i64 3584
  store <8 x double> %3780, ptr %4005, align 64, !tbaa !26
  %4006 = getelementptr inbounds nuw i8, ptr %3773, i64 3200
  %4007 = load <8 x double>, ptr %4006, align 64, !tbaa !26
  %4008 = getelementptr inbounds nuw i8, ptr %3773, i64 5888
  %4009 = load <8 x double>, ptr %4008, align 64, !tbaa !26
  %4010 = fsub <8 x double> %4009, %3780
  %4011 = getelementptr inbounds nuw i8, ptr %3773, i64 8256
  %4012 = load <8 x double>, ptr %4011, align 64, !tbaa !26
  %4013 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4007, <8 x double> %4012, <8 x double> splat (double 1.000000e+00))
  %4014 = fdiv <8 x double> %4010, %4013
  %4015 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3780, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %4016 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3780, <8 x double> %4015, <8 x double> splat (double 0x4142F8368A3D70A4))
  %4017 = fneg <8 x double> %3775
  %4018 = fmul <8 x double> %4016, %4017
  %4019 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4007, <8 x double> %4014, <8 x double> %4018)
  %4020 = getelementptr inbounds nuw i8, ptr %3773, i64 3456
  store <8 x double> %4019, ptr %4020, align 64, !tbaa !26
  %4021 = getelementptr inbounds nuw i8, ptr %3773, i64 6784
  %4022 = load <8 x double>, ptr %4021, align 64, !tbaa !26
  %4023 = fsub <8 x double> %4009, %4022
  %4024 = fsub <8 x double> %4023, %4014
  %4025 = getelementptr inbounds nuw i8, ptr %3773, i64 3648
  store <8 x double> %4024, ptr %4025, align 64, !tbaa !26
  %4026 = getelementptr inbounds nuw i8, ptr %3773, i64 7360
  %4027 = load <8 x double>, ptr %4026, align 64, !tbaa !26
  %4028 = getelementptr inbounds nuw i8, ptr %3773, i64 7424
  %4029 = load <8 x double>, ptr %4028, align 64, !tbaa !26
  %4030 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4027, <8 x double> %3780, <8 x double> %4029)
  %4031 = getelementptr inbounds nuw i8, ptr %3773, i64 6720
  %4032 = load <8 x double>, ptr %4031, align 64, !tbaa !26
  %4033 = getelementptr inbounds nuw i8, ptr %3773, i64 4224
  %4034 = load <8 x double>, ptr %4033, align 64, !tbaa !26
  %4035 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3798, <8 x double> %4034, <8 x double> %4032)
  %4036 = getelementptr inbounds nuw i8, ptr %3773, i64 5120
  %4037 = load <8 x double>, ptr %4036, align 64, !tbaa !26
  %4038 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3804, <8 x double> %4037, <8 x double> %4035)
  %4039 = fmul <8 x double> %3807, %4038
  %4040 = getelementptr inbounds nuw i8, ptr %3773, i64 3328
  store <8 x double> %4039, ptr %4040, align 64, !tbaa !26
  %4041 = getelementptr inbounds nuw i8, ptr %3773, i64 4288
  %4042 = load <8 x double>, ptr %4041, align 64, !tbaa !26
  %4043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3798, <8 x double> %4042, <8 x double> %3997)
  %4044 = getelementptr inbounds nuw i8, ptr %3773, i64 5184
  %4045 = load <8 x double>, ptr %4044, align 64, !tbaa !26
  %4046 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3804, <8 x double> %4045, <8 x double> %4043)
  %4047 = fmul <8 x double> %3807, %4046
  %4048 = getelementptr inbounds nuw i8, ptr %3773, i64 3392
  store <8 x double> %4047, ptr %4048, align 64, !tbaa !26
  %4049 = getelementptr inbounds nuw i8, ptr %3773, i64 4608
  %4050 = load <8 x double>, ptr %4049, align 64, !tbaa !26
  %4051 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3798, <8 x double> %4050, <8 x double> %4030)
  %4052 = getelementptr inbounds nuw i8, ptr %3773, i64 5504
  %4053 = load <8 x double>, ptr %4052, align 64, !tbaa !26
  %4054 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3804, <8 x double> %4053, <8 x double> %4051)
  %4055 = fmul <8 x double> %3807, %4054
  %4056 = getelementptr inbounds nuw i8, ptr %3773, i64 3712
  store <8 x double> %4055, ptr %4056, align 64, !tbaa !26
  %4057 = fcmp ogt <8 x double> %3771, %3973
  %4058 = select <8 x i1> %4057, <8 x double> %3771, <8 x double> %3973
  %4059 = add nuw nsw i64 %3770, 1
  %4060 = load i64, ptr %157, align 8, !tbaa !20
  %4061 = icmp slt i64 %4059, %4060
  br i1 %4061, label %3769, label %4062, !llvm.loop !135

4062:                                             ; preds = %3996, %3516
  %4063 = phi <8 x double> [ zeroinitializer, %3516 ], [ %4058, %3996 ]
  %4064 = phi i64 [ %3647, %3516 ], [ %4060, %3996 ]
  %4065 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %4063)
  %4066 = insertelement <8 x double> poison, double %4065, i64 0
  %4067 = shufflevector <8 x double> %4066, <8 x double> poison, <8 x i32> zeroinitializer
  %4068 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %4069 = fadd <8 x double> %4068, splat (double 1.000000e+00)
  store <8 x double> %4069, ptr %174, align 64, !tbaa !26
  %4070 = icmp sgt i64 %4064, 0
  br i1 %4070, label %4071, label %4075

4071:                                             ; preds = %4062
  %4072 = load ptr, ptr %130, align 8, !tbaa !28
  %4073 = load i64, ptr %119, align 16, !tbaa !21
  %4074 = add nsw i64 %4073, -1
  br label %4099

4075:                                             ; preds = %4125, %4062
  %4076 = phi <8 x double> [ zeroinitializer, %4062 ], [ %4140, %4125 ]
  %4077 = load i64, ptr %209, align 32, !tbaa !24
  %4078 = sitofp i64 %4077 to double
  %4079 = insertelement <8 x double> poison, double %4078, i64 0
  %4080 = shufflevector <8 x double> %4079, <8 x double> poison, <8 x i32> zeroinitializer
  %4081 = fcmp oge <8 x double> %4069, %4080
  %4082 = tail call double @llvm.vector.reduce.fmax.v8f64(<8 x double> %4076)
  %4083 = fcmp oeq double %4082, 0.000000e+00
  %4084 = insertelement <8 x i1> poison, i1 %4083, i64 0
  %4085 = shufflevector <8 x i1> %4084, <8 x i1> poison, <8 x i32> zeroinitializer
  %4086 = and <8 x i1> %4085, %4081
  %4087 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %4088 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %4089 = fcmp olt <8 x double> %4067, %4088
  %4090 = or <8 x i1> %4089, %4086
  %4091 = fcmp oge <8 x double> %4069, splat (double 2.000000e+01)
  %4092 = or <8 x i1> %4091, %4090
  %4093 = select <8 x i1> %4092, <8 x i64> %4087, <8 x i64> zeroinitializer
  store <8 x i64> %4093, ptr %134, align 64, !tbaa !26
  %4094 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4093)
  %4095 = icmp eq i64 %4094, 0
  br i1 %4095, label %519, label %4096, !llvm.loop !55

4096:                                             ; preds = %4075
  br i1 %4070, label %4097, label %4143

4097:                                             ; preds = %4096
  %4098 = icmp eq <8 x i64> %4093, zeroinitializer
  br label %4458

4099:                                             ; preds = %4071, %4125
  %4100 = phi i64 [ 0, %4071 ], [ %4141, %4125 ]
  %4101 = phi <8 x double> [ zeroinitializer, %4071 ], [ %4140, %4125 ]
  %4102 = getelementptr inbounds nuw %struct.Piece, ptr %4072, i64 %4100
  %4103 = getelementptr inbounds nuw i8, ptr %4102, i64 8512
  %4104 = load i64, ptr %4103, align 64, !tbaa !31
  %4105 = icmp sgt i64 %4073, %4104
  br i1 %4105, label %4114, label %4106

4106:                                             ; preds = %4099
  %4107 = getelementptr inbounds nuw i8, ptr %4102, i64 8672
  %4108 = load ptr, ptr %4107, align 32, !tbaa !73
  %4109 = getelementptr inbounds <8 x double>, ptr %4108, i64 %4074
  %4110 = load <8 x double>, ptr %4109, align 64, !tbaa !26
  %4111 = getelementptr inbounds nuw i8, ptr %4102, i64 1536
  %4112 = load <8 x double>, ptr %4111, align 64, !tbaa !26
  %4113 = fmul <8 x double> %4110, %4112
  br label %4125

4114:                                             ; preds = %4099
  %4115 = getelementptr inbounds nuw i8, ptr %4102, i64 3776
  %4116 = load <8 x double>, ptr %4115, align 64, !tbaa !26
  %4117 = getelementptr inbounds nuw i8, ptr %4102, i64 1536
  %4118 = load <8 x double>, ptr %4117, align 64, !tbaa !26
  %4119 = getelementptr inbounds nuw i8, ptr %4102, i64 8672
  %4120 = load ptr, ptr %4119, align 32, !tbaa !73
  %4121 = getelementptr inbounds <8 x double>, ptr %4120, i64 %4074
  %4122 = load <8 x double>, ptr %4121, align 64, !tbaa !26
  %4123 = fsub <8 x double> %4116, %4118
  %4124 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4122, <8 x double> %4123, <8 x double> %4118)
  br label %4125

4125:                                             ; preds = %4106, %4114
  %4126 = phi <8 x double> [ %4113, %4106 ], [ %4124, %4114 ]
  %4127 = getelementptr inbounds nuw i8, ptr %4102, i64 8320
  %4128 = load <8 x i64>, ptr %4127, align 64, !tbaa !26
  %4129 = getelementptr inbounds nuw i8, ptr %4102, i64 7616
  %4130 = load <8 x double>, ptr %4129, align 64, !tbaa !26
  %4131 = fcmp une <8 x double> %4130, zeroinitializer
  %4132 = getelementptr inbounds nuw i8, ptr %4102, i64 3008
  %4133 = load <8 x double>, ptr %4132, align 64, !tbaa !26
  %4134 = fcmp uge <8 x double> %4133, %4126
  %4135 = select <8 x i1> %4134, <8 x i1> splat (i1 true), <8 x i1> %4131
  %4136 = icmp eq <8 x i64> %4128, zeroinitializer
  %4137 = select <8 x i1> %4135, <8 x i1> splat (i1 true), <8 x i1> %4136
  %4138 = select <8 x i1> %4137, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4139 = fcmp ogt <8 x double> %4101, %4138
  %4140 = select <8 x i1> %4139, <8 x double> %4101, <8 x double> %4138
  %4141 = add nuw nsw i64 %4100, 1
  %4142 = icmp eq i64 %4141, %4064
  br i1 %4142, label %4075, label %4099, !llvm.loop !136

4143:                                             ; preds = %4506, %4096
  %4144 = phi i64 [ %4064, %4096 ], [ %4512, %4506 ]
  %4145 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %4146 = fadd <8 x double> %4145, splat (double 1.000000e+00)
  %4147 = icmp eq <8 x i64> %4093, zeroinitializer
  %4148 = select <8 x i1> %4147, <8 x double> %4145, <8 x double> %4146
  store <8 x double> %4148, ptr %162, align 64, !tbaa !26
  %4149 = fcmp ogt <8 x double> %4148, splat (double 4.000000e+01)
  %4150 = select <8 x i1> %4149, <8 x i64> %4093, <8 x i64> zeroinitializer
  %4151 = xor <8 x i64> %4150, %4093
  %4152 = load <8 x double>, ptr %127, align 64, !tbaa !26
  %4153 = fadd <8 x double> %4152, splat (double 1.000000e+00)
  %4154 = icmp eq <8 x i64> %4150, zeroinitializer
  %4155 = select <8 x i1> %4154, <8 x double> %4152, <8 x double> %4153
  store <8 x double> %4155, ptr %127, align 64, !tbaa !26
  %4156 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %4157 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %4158 = fsub <8 x double> %4156, %4157
  %4159 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4158)
  %4160 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %4161 = fmul <8 x double> %4160, splat (double 1.500000e+00)
  %4162 = fcmp ogt <8 x double> %4159, %4161
  %4163 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4164 = fcmp ogt <8 x double> %4163, splat (double 2.000000e-03)
  %4165 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4166 = fcmp oeq <8 x double> %4165, zeroinitializer
  %4167 = and <8 x i1> %4162, %4166
  %4168 = and <8 x i1> %4164, %4167
  %4169 = fdiv <8 x double> %4160, %4159
  %4170 = select <8 x i1> %4168, <8 x i64> %4151, <8 x i64> zeroinitializer
  %4171 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4172 = fcmp ogt <8 x double> %4171, %4163
  %4173 = select <8 x i1> %4172, <8 x double> %4171, <8 x double> %4163
  %4174 = select <8 x i1> %4168, <8 x double> zeroinitializer, <8 x double> %4173
  %4175 = icmp eq <8 x i64> %4170, zeroinitializer
  %4176 = select <8 x i1> %4175, <8 x double> %4171, <8 x double> %4174
  store <8 x double> %4176, ptr %160, align 64, !tbaa !26
  %4177 = fcmp ogt <8 x double> %4169, splat (double 5.000000e-02)
  %4178 = select <8 x i1> %4177, <8 x double> %4169, <8 x double> splat (double 5.000000e-02)
  %4179 = fcmp olt <8 x double> %4178, splat (double 0x3FEE666666666666)
  %4180 = select <8 x i1> %4179, <8 x double> %4178, <8 x double> splat (double 0x3FEE666666666666)
  %4181 = fmul <8 x double> %4163, %4180
  %4182 = fcmp ogt <8 x double> %4181, splat (double 0x3EB0C6F7A0B5ED8D)
  %4183 = select <8 x i1> %4182, <8 x double> %4181, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4184 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %4185 = select <8 x i1> %4175, <8 x double> %4184, <8 x double> %4183
  store <8 x double> %4185, ptr %140, align 64, !tbaa !26
  %4186 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %4187 = fadd <8 x double> %4186, splat (double 1.000000e+00)
  %4188 = select <8 x i1> %4175, <8 x double> %4186, <8 x double> %4187
  store <8 x double> %4188, ptr %124, align 64, !tbaa !26
  %4189 = xor <8 x i64> %4170, %4151
  %4190 = icmp sgt i64 %4144, 0
  br i1 %4190, label %4191, label %4288

4191:                                             ; preds = %4143
  %4192 = load ptr, ptr %130, align 8, !tbaa !28
  %4193 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %4194 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %4195 = fcmp une <8 x double> %4193, %4194
  %4196 = fcmp ule <8 x double> %4193, zeroinitializer
  %4197 = or <8 x i1> %4196, %4195
  %4198 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %4199 = fcmp ogt <8 x double> %4163, splat (double 0x3E7AD7F29ABCAF48)
  %4200 = fcmp ogt <8 x double> %4163, splat (double 1.000000e-05)
  %4201 = fcmp ogt <8 x double> %4163, splat (double 1.000000e-04)
  br label %4202

4202:                                             ; preds = %4191, %4202
  %4203 = phi i64 [ 0, %4191 ], [ %4286, %4202 ]
  %4204 = phi <8 x double> [ splat (double 1.000000e+00), %4191 ], [ %4285, %4202 ]
  %4205 = phi <8 x i64> [ zeroinitializer, %4191 ], [ %4233, %4202 ]
  %4206 = phi <8 x i64> [ zeroinitializer, %4191 ], [ %4282, %4202 ]
  %4207 = getelementptr inbounds nuw %struct.Piece, ptr %4192, i64 %4203
  %4208 = getelementptr inbounds nuw i8, ptr %4207, i64 3072
  %4209 = load <8 x double>, ptr %4208, align 64, !tbaa !26
  %4210 = getelementptr inbounds nuw i8, ptr %4207, i64 3968
  %4211 = load <8 x double>, ptr %4210, align 64, !tbaa !26
  %4212 = getelementptr inbounds nuw i8, ptr %4207, i64 8320
  %4213 = load <8 x i64>, ptr %4212, align 64, !tbaa !26
  %4214 = xor <8 x i64> %4213, splat (i64 -1)
  %4215 = getelementptr inbounds nuw i8, ptr %4207, i64 896
  %4216 = load <8 x double>, ptr %4215, align 64, !tbaa !26
  %4217 = fmul <8 x double> %4198, %4216
  %4218 = fcmp ogt <8 x double> %4217, splat (double 0x3E7AD7F29ABCAF48)
  %4219 = fneg <8 x double> %4217
  %4220 = select <8 x i1> %4218, <8 x double> %4219, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4221 = fcmp olt <8 x double> %4209, %4220
  %4222 = select <8 x i1> %4221, <8 x i1> %4197, <8 x i1> zeroinitializer
  %4223 = select <8 x i1> %4222, <8 x i64> %4214, <8 x i64> zeroinitializer
  %4224 = fcmp ole <8 x double> %4211, zeroinitializer
  %4225 = select <8 x i1> %4224, <8 x i64> %4223, <8 x i64> zeroinitializer
  %4226 = getelementptr inbounds nuw i8, ptr %4207, i64 832
  %4227 = load <8 x double>, ptr %4226, align 64, !tbaa !26
  %4228 = fmul <8 x double> %4227, splat (double -3.000000e-07)
  %4229 = fcmp olt <8 x double> %4209, %4228
  %4230 = select <8 x i1> %4199, <8 x i1> %4229, <8 x i1> zeroinitializer
  %4231 = select <8 x i1> %4230, <8 x i64> %4225, <8 x i64> zeroinitializer
  %4232 = or <8 x i64> %4231, %4206
  %4233 = or <8 x i64> %4231, %4205
  %4234 = fcmp olt <8 x double> %4204, splat (double 3.000000e-01)
  %4235 = icmp eq <8 x i64> %4231, zeroinitializer
  %4236 = select <8 x i1> %4235, <8 x i1> splat (i1 true), <8 x i1> %4234
  %4237 = select <8 x i1> %4236, <8 x double> %4204, <8 x double> splat (double 3.000000e-01)
  %4238 = xor <8 x i64> %4225, splat (i64 -1)
  %4239 = and <8 x i64> %4223, %4238
  %4240 = select <8 x i1> %4200, <8 x i64> %4239, <8 x i64> zeroinitializer
  %4241 = fsub <8 x double> %4211, %4209
  %4242 = fdiv <8 x double> %4211, %4241
  %4243 = or <8 x i64> %4232, %4240
  %4244 = fcmp olt <8 x double> %4237, %4242
  %4245 = icmp eq <8 x i64> %4240, zeroinitializer
  %4246 = select <8 x i1> %4245, <8 x i1> splat (i1 true), <8 x i1> %4244
  %4247 = select <8 x i1> %4246, <8 x double> %4237, <8 x double> %4242
  %4248 = getelementptr inbounds nuw i8, ptr %4207, i64 3904
  %4249 = load <8 x double>, ptr %4248, align 64, !tbaa !26
  %4250 = getelementptr inbounds nuw i8, ptr %4207, i64 3008
  %4251 = load <8 x double>, ptr %4250, align 64, !tbaa !26
  %4252 = getelementptr inbounds nuw i8, ptr %4207, i64 7616
  %4253 = load <8 x double>, ptr %4252, align 64, !tbaa !26
  %4254 = fcmp oeq <8 x double> %4253, zeroinitializer
  %4255 = getelementptr inbounds nuw i8, ptr %4207, i64 1472
  %4256 = load <8 x double>, ptr %4255, align 64, !tbaa !26
  %4257 = fmul <8 x double> %4256, splat (double 0x3FEFF7CED916872B)
  %4258 = fcmp olt <8 x double> %4251, %4257
  %4259 = and <8 x i1> %4254, %4258
  %4260 = and <8 x i1> %4201, %4259
  %4261 = fsub <8 x double> %4249, %4256
  %4262 = fsub <8 x double> %4249, %4251
  %4263 = fdiv <8 x double> %4261, %4262
  %4264 = fcmp uge <8 x double> %4247, %4263
  %4265 = select <8 x i1> %4260, <8 x i1> %4264, <8 x i1> zeroinitializer
  %4266 = select <8 x i1> %4265, <8 x double> %4263, <8 x double> %4247
  %4267 = fcmp oeq <8 x double> %4253, splat (double 1.000000e+00)
  %4268 = getelementptr inbounds nuw i8, ptr %4207, i64 3264
  %4269 = load <8 x double>, ptr %4268, align 64, !tbaa !26
  %4270 = getelementptr inbounds nuw i8, ptr %4207, i64 1600
  %4271 = load <8 x double>, ptr %4270, align 64, !tbaa !26
  %4272 = fmul <8 x double> %4271, splat (double 1.000100e+00)
  %4273 = fcmp ogt <8 x double> %4269, %4272
  %4274 = and <8 x i1> %4267, %4273
  %4275 = and <8 x i1> %4201, %4274
  %4276 = getelementptr inbounds nuw i8, ptr %4207, i64 4160
  %4277 = load <8 x double>, ptr %4276, align 64, !tbaa !26
  %4278 = fsub <8 x double> %4271, %4277
  %4279 = fsub <8 x double> %4269, %4277
  %4280 = fdiv <8 x double> %4278, %4279
  %4281 = select <8 x i1> %4274, <8 x i1> %4201, <8 x i1> %4260
  %4282 = select <8 x i1> %4281, <8 x i64> splat (i64 -1), <8 x i64> %4243
  %4283 = fcmp uge <8 x double> %4266, %4280
  %4284 = select <8 x i1> %4275, <8 x i1> %4283, <8 x i1> zeroinitializer
  %4285 = select <8 x i1> %4284, <8 x double> %4280, <8 x double> %4266
  %4286 = add nuw nsw i64 %4203, 1
  %4287 = icmp eq i64 %4286, %4144
  br i1 %4287, label %4288, label %4202, !llvm.loop !137

4288:                                             ; preds = %4202, %4143
  %4289 = phi <8 x i64> [ zeroinitializer, %4143 ], [ %4282, %4202 ]
  %4290 = phi <8 x i64> [ zeroinitializer, %4143 ], [ %4233, %4202 ]
  %4291 = phi <8 x double> [ splat (double 1.000000e+00), %4143 ], [ %4285, %4202 ]
  %4292 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4289)
  %4293 = icmp eq i64 %4292, 0
  %4294 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4290)
  %4295 = icmp eq i64 %4294, 0
  %4296 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4291)
  %4297 = insertelement <8 x double> poison, double %4296, i64 0
  %4298 = shufflevector <8 x double> %4297, <8 x double> poison, <8 x i32> zeroinitializer
  %4299 = select i1 %4293, <8 x i64> zeroinitializer, <8 x i64> %4189
  %4300 = fcmp ogt <8 x double> %4176, %4163
  %4301 = select <8 x i1> %4300, <8 x double> %4176, <8 x double> %4163
  %4302 = select i1 %4295, <8 x i1> splat (i1 true), <8 x i1> zeroinitializer
  %4303 = select <8 x i1> %4302, <8 x double> %4301, <8 x double> zeroinitializer
  %4304 = icmp eq <8 x i64> %4299, zeroinitializer
  %4305 = select <8 x i1> %4304, <8 x double> %4176, <8 x double> %4303
  %4306 = fcmp ogt <8 x double> %4298, splat (double 5.000000e-02)
  %4307 = select <8 x i1> %4306, <8 x double> %4298, <8 x double> splat (double 5.000000e-02)
  %4308 = fcmp olt <8 x double> %4307, splat (double 0x3FEE666666666666)
  %4309 = select <8 x i1> %4308, <8 x double> %4307, <8 x double> splat (double 0x3FEE666666666666)
  %4310 = fmul <8 x double> %4163, %4309
  %4311 = fcmp ogt <8 x double> %4310, splat (double 0x3EB0C6F7A0B5ED8D)
  %4312 = select <8 x i1> %4311, <8 x double> %4310, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4313 = select <8 x i1> %4304, <8 x double> %4185, <8 x double> %4312
  %4314 = fadd <8 x double> %4188, splat (double 1.000000e+00)
  %4315 = select <8 x i1> %4304, <8 x double> %4188, <8 x double> %4314
  %4316 = xor <8 x i64> %4299, %4189
  %4317 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %4318 = fmul <8 x double> %4317, splat (double 5.000000e-01)
  %4319 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %4320 = load <8 x i64>, ptr %144, align 64, !tbaa !26
  %4321 = fneg <8 x double> %4318
  %4322 = icmp eq <8 x i64> %4320, zeroinitializer
  %4323 = select <8 x i1> %4322, <8 x double> %4321, <8 x double> %4318
  %4324 = fadd <8 x double> %4319, %4323
  %4325 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4326 = fsub <8 x double> %4325, %4324
  %4327 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %4328 = fsub <8 x double> %4327, %4324
  %4329 = fneg <8 x double> %4326
  %4330 = select <8 x i1> %4322, <8 x double> %4329, <8 x double> %4326
  %4331 = fneg <8 x double> %4328
  %4332 = select <8 x i1> %4322, <8 x double> %4331, <8 x double> %4328
  %4333 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %4334 = fcmp oeq <8 x double> %4333, zeroinitializer
  %4335 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %4336 = fcmp oeq <8 x double> %4335, zeroinitializer
  %4337 = and <8 x i1> %4334, %4336
  %4338 = fcmp olt <8 x double> %4330, splat (double -4.000000e-03)
  %4339 = and <8 x i1> %4337, %4338
  %4340 = fcmp ogt <8 x double> %4332, splat (double 4.000000e-03)
  %4341 = and <8 x i1> %4340, %4339
  %4342 = and <8 x i1> %4164, %4341
  %4343 = fsub <8 x double> %4330, %4332
  %4344 = fdiv <8 x double> %4330, %4343
  %4345 = select <8 x i1> %4342, <8 x i64> %4316, <8 x i64> zeroinitializer
  %4346 = fcmp ogt <8 x double> %4305, %4163
  %4347 = icmp eq <8 x i64> %4345, zeroinitializer
  %4348 = select <8 x i1> %4347, <8 x i1> splat (i1 true), <8 x i1> %4346
  %4349 = select <8 x i1> %4348, <8 x double> %4305, <8 x double> %4163
  store <8 x double> %4349, ptr %160, align 64, !tbaa !26
  %4350 = fcmp ogt <8 x double> %4344, splat (double 5.000000e-02)
  %4351 = select <8 x i1> %4350, <8 x double> %4344, <8 x double> splat (double 5.000000e-02)
  %4352 = fcmp olt <8 x double> %4351, splat (double 0x3FEE666666666666)
  %4353 = select <8 x i1> %4352, <8 x double> %4351, <8 x double> splat (double 0x3FEE666666666666)
  %4354 = fmul <8 x double> %4163, %4353
  %4355 = fcmp ogt <8 x double> %4354, splat (double 0x3EB0C6F7A0B5ED8D)
  %4356 = select <8 x i1> %4355, <8 x double> %4354, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4357 = select <8 x i1> %4347, <8 x double> %4313, <8 x double> %4356
  store <8 x double> %4357, ptr %140, align 64, !tbaa !26
  %4358 = fadd <8 x double> %4315, splat (double 1.000000e+00)
  %4359 = select <8 x i1> %4347, <8 x double> %4315, <8 x double> %4358
  store <8 x double> %4359, ptr %124, align 64, !tbaa !26
  %4360 = xor <8 x i64> %4345, %4316
  %4361 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4362 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %4363 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %4364 = fsub <8 x double> %4362, %4363
  %4365 = load <8 x double>, ptr %215, align 64, !tbaa !26
  %4366 = fcmp une <8 x double> %4365, splat (double 1.000000e+00)
  %4367 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %4368 = fsub <8 x double> %4325, %4367
  %4369 = select <8 x i1> %4366, <8 x double> splat (double -1.000000e+00), <8 x double> %4368
  %4370 = fcmp une <8 x double> %4365, splat (double 2.000000e+00)
  %4371 = fsub <8 x double> %4361, %4367
  %4372 = select <8 x i1> %4370, <8 x double> %4369, <8 x double> %4371
  %4373 = fcmp une <8 x double> %4365, splat (double 3.000000e+00)
  %4374 = fsub <8 x double> %4364, %4367
  %4375 = select <8 x i1> %4373, <8 x double> %4372, <8 x double> %4374
  %4376 = fcmp une <8 x double> %4365, splat (double 4.000000e+00)
  %4377 = fsub <8 x double> %4367, %4364
  %4378 = select <8 x i1> %4376, <8 x double> %4375, <8 x double> %4377
  br i1 %4190, label %4379, label %4411

4379:                                             ; preds = %4288
  %4380 = load ptr, ptr %130, align 8, !tbaa !28
  %4381 = and i64 %4144, 1
  %4382 = icmp eq i64 %4144, 1
  br i1 %4382, label %4401, label %4383

4383:                                             ; preds = %4379
  %4384 = and i64 %4144, 9223372036854775806
  br label %4385

4385:                                             ; preds = %4385, %4383
  %4386 = phi i64 [ 0, %4383 ], [ %4398, %4385 ]
  %4387 = phi <8 x double> [ splat (double 1.000000e+09), %4383 ], [ %4397, %4385 ]
  %4388 = phi i64 [ 0, %4383 ], [ %4399, %4385 ]
  %4389 = getelementptr inbounds nuw %struct.Piece, ptr %4380, i64 %4386, i32 34
  %4390 = load <8 x double>, ptr %4389, align 64, !tbaa !26
  %4391 = fcmp olt <8 x double> %4387, %4390
  %4392 = select <8 x i1> %4391, <8 x double> %4387, <8 x double> %4390
  %4393 = or disjoint i64 %4386, 1
  %4394 = getelementptr inbounds nuw %struct.Piece, ptr %4380, i64 %4393, i32 34
  %4395 = load <8 x double>, ptr %4394, align 64, !tbaa !26
  %4396 = fcmp olt <8 x double> %4392, %4395
  %4397 = select <8 x i1> %4396, <8 x double> %4392, <8 x double> %4395
  %4398 = add nuw nsw i64 %4386, 2
  %4399 = add i64 %4388, 2
  %4400 = icmp eq i64 %4399, %4384
  br i1 %4400, label %4401, label %4385, !llvm.loop !138

4401:                                             ; preds = %4385, %4379
  %4402 = phi <8 x double> [ poison, %4379 ], [ %4397, %4385 ]
  %4403 = phi i64 [ 0, %4379 ], [ %4398, %4385 ]
  %4404 = phi <8 x double> [ splat (double 1.000000e+09), %4379 ], [ %4397, %4385 ]
  %4405 = icmp eq i64 %4381, 0
  br i1 %4405, label %4411, label %4406

4406:                                             ; preds = %4401
  %4407 = getelementptr inbounds nuw %struct.Piece, ptr %4380, i64 %4403, i32 34
  %4408 = load <8 x double>, ptr %4407, align 64, !tbaa !26
  %4409 = fcmp olt <8 x double> %4404, %4408
  %4410 = select <8 x i1> %4409, <8 x double> %4404, <8 x double> %4408
  br label %4411

4411:                                             ; preds = %4406, %4401, %4288
  %4412 = phi <8 x double> [ splat (double 1.000000e+09), %4288 ], [ %4402, %4401 ], [ %4410, %4406 ]
  %4413 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %4412)
  %4414 = insertelement <8 x double> poison, double %4413, i64 0
  %4415 = shufflevector <8 x double> %4414, <8 x double> poison, <8 x i32> zeroinitializer
  %4416 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %4417 = fsub <8 x double> %4416, %4363
  %4418 = fsub <8 x double> %4327, %4367
  %4419 = select <8 x i1> %4366, <8 x double> splat (double -1.000000e+00), <8 x double> %4418
  %4420 = fsub <8 x double> %4415, %4367
  %4421 = select <8 x i1> %4370, <8 x double> %4419, <8 x double> %4420
  %4422 = fsub <8 x double> %4417, %4367
  %4423 = select <8 x i1> %4373, <8 x double> %4421, <8 x double> %4422
  %4424 = fsub <8 x double> %4367, %4417
  %4425 = select <8 x i1> %4376, <8 x double> %4423, <8 x double> %4424
  %4426 = fcmp une <8 x double> %4365, zeroinitializer
  %4427 = fcmp oge <8 x double> %4163, splat (double 5.000000e-02)
  %4428 = and <8 x i1> %4427, %4426
  %4429 = fcmp olt <8 x double> %4378, zeroinitializer
  %4430 = and <8 x i1> %4428, %4429
  %4431 = fsub <8 x double> %4425, %4378
  %4432 = fmul <8 x double> %4431, splat (double 2.000000e-02)
  %4433 = fcmp ogt <8 x double> %4425, %4432
  %4434 = and <8 x i1> %4430, %4433
  %4435 = fsub <8 x double> %4378, %4425
  %4436 = fdiv <8 x double> %4378, %4435
  %4437 = fcmp olt <8 x double> %4436, splat (double 0x3FEE666666666666)
  %4438 = and <8 x i1> %4437, %4434
  %4439 = select <8 x i1> %4438, <8 x i64> %4360, <8 x i64> zeroinitializer
  %4440 = fcmp ogt <8 x double> %4349, %4163
  %4441 = icmp eq <8 x i64> %4439, zeroinitializer
  %4442 = select <8 x i1> %4441, <8 x i1> splat (i1 true), <8 x i1> %4440
  %4443 = select <8 x i1> %4442, <8 x double> %4349, <8 x double> %4163
  store <8 x double> %4443, ptr %160, align 64, !tbaa !26
  %4444 = fcmp ogt <8 x double> %4436, splat (double 5.000000e-02)
  %4445 = select <8 x i1> %4444, <8 x double> %4436, <8 x double> splat (double 5.000000e-02)
  %4446 = fcmp olt <8 x double> %4445, splat (double 0x3FEE666666666666)
  %4447 = select <8 x i1> %4446, <8 x double> %4445, <8 x double> splat (double 0x3FEE666666666666)
  %4448 = fmul <8 x double> %4163, %4447
  %4449 = fcmp ogt <8 x double> %4448, splat (double 0x3EB0C6F7A0B5ED8D)
  %4450 = select <8 x i1> %4449, <8 x double> %4448, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4451 = select <8 x i1> %4441, <8 x double> %4357, <8 x double> %4450
  store <8 x double> %4451, ptr %140, align 64, !tbaa !26
  %4452 = fadd <8 x double> %4359, splat (double 1.000000e+00)
  %4453 = select <8 x i1> %4441, <8 x double> %4359, <8 x double> %4452
  store <8 x double> %4453, ptr %124, align 64, !tbaa !26
  %4454 = xor <8 x i64> %4439, %4360
  %4455 = or <8 x i64> %4454, %4150
  %4456 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4455)
  %4457 = icmp eq i64 %4456, 0
  br i1 %4457, label %519, label %4514

4458:                                             ; preds = %4097, %4506
  %4459 = phi i64 [ 0, %4097 ], [ %4511, %4506 ]
  %4460 = load ptr, ptr %130, align 8, !tbaa !28
  %4461 = getelementptr inbounds nuw %struct.Piece, ptr %4460, i64 %4459
  %4462 = getelementptr inbounds nuw i8, ptr %4461, i64 8584
  %4463 = load ptr, ptr %4462, align 8, !tbaa !58
  %4464 = load <8 x double>, ptr %4463, align 64, !tbaa !26
  %4465 = getelementptr inbounds nuw i8, ptr %4461, i64 1344
  %4466 = load <8 x double>, ptr %4465, align 64, !tbaa !26
  %4467 = getelementptr inbounds nuw i8, ptr %4463, i64 64
  %4468 = load <8 x double>, ptr %4467, align 64, !tbaa !26
  %4469 = fsub <8 x double> %4468, %4464
  %4470 = fneg <8 x double> %4466
  %4471 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4470, <8 x double> %4469, <8 x double> %4464)
  %4472 = getelementptr inbounds nuw i8, ptr %4461, i64 8512
  %4473 = load i64, ptr %4472, align 64, !tbaa !31
  %4474 = icmp eq i64 %4473, 0
  br i1 %4474, label %4506, label %4475

4475:                                             ; preds = %4458
  %4476 = getelementptr <8 x double>, ptr %4463, i64 %4473
  %4477 = getelementptr i8, ptr %4476, i64 -64
  %4478 = load <8 x double>, ptr %4477, align 64, !tbaa !26
  %4479 = load <8 x double>, ptr %4476, align 64, !tbaa !26
  %4480 = getelementptr inbounds nuw i8, ptr %4461, i64 2880
  %4481 = load <8 x double>, ptr %4480, align 64, !tbaa !26
  %4482 = getelementptr inbounds nuw i8, ptr %4461, i64 2944
  %4483 = load <8 x double>, ptr %4482, align 64, !tbaa !26
  %4484 = getelementptr inbounds nuw i8, ptr %4461, i64 64
  %4485 = load <8 x double>, ptr %4484, align 64, !tbaa !26
  %4486 = fsub <8 x double> %4483, %4485
  %4487 = fmul <8 x double> %4481, %4486
  %4488 = getelementptr inbounds nuw i8, ptr %4461, i64 576
  %4489 = load <8 x double>, ptr %4488, align 64, !tbaa !26
  %4490 = getelementptr inbounds nuw i8, ptr %4461, i64 2816
  %4491 = load <8 x double>, ptr %4490, align 64, !tbaa !26
  %4492 = fdiv <8 x double> %4489, %4491
  %4493 = getelementptr inbounds nuw i8, ptr %4461, i64 192
  %4494 = load <8 x double>, ptr %4493, align 64, !tbaa !26
  %4495 = getelementptr inbounds nuw i8, ptr %4461, i64 256
  %4496 = load <8 x double>, ptr %4495, align 64, !tbaa !26
  %4497 = getelementptr inbounds nuw i8, ptr %4461, i64 320
  %4498 = load <8 x double>, ptr %4497, align 64, !tbaa !26
  %4499 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4479, <8 x double> %4498, <8 x double> %4496)
  %4500 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4479, <8 x double> %4499, <8 x double> %4494)
  %4501 = fdiv <8 x double> %4500, %4487
  %4502 = fmul <8 x double> %4479, %4501
  %4503 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4492, <8 x double> %4478, <8 x double> %4502)
  %4504 = fadd <8 x double> %4492, %4501
  %4505 = fdiv <8 x double> %4503, %4504
  br label %4506

4506:                                             ; preds = %4458, %4475
  %4507 = phi <8 x double> [ %4505, %4475 ], [ %4471, %4458 ]
  %4508 = getelementptr inbounds nuw i8, ptr %4461, i64 7552
  %4509 = load <8 x double>, ptr %4508, align 64, !tbaa !26
  %4510 = select <8 x i1> %4098, <8 x double> %4509, <8 x double> %4507
  store <8 x double> %4510, ptr %4508, align 64, !tbaa !26
  %4511 = add nuw nsw i64 %4459, 1
  %4512 = load i64, ptr %157, align 8, !tbaa !20
  %4513 = icmp slt i64 %4511, %4512
  br i1 %4513, label %4458, label %4143, !llvm.loop !139

4514:                                             ; preds = %4411
  %4515 = icmp eq <8 x i64> %4455, zeroinitializer
  %4516 = select <8 x i1> %4515, <8 x double> %4157, <8 x double> %4156
  store <8 x double> %4516, ptr %211, align 64, !tbaa !26
  %4517 = load <8 x double>, ptr %151, align 64, !tbaa !26
  %4518 = select <8 x i1> %4515, <8 x double> %4517, <8 x double> %4325
  store <8 x double> %4518, ptr %151, align 64, !tbaa !26
  %4519 = select <8 x i1> %4515, <8 x double> %4325, <8 x double> %4327
  store <8 x double> %4519, ptr %145, align 64, !tbaa !26
  %4520 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %4521 = select <8 x i1> %4515, <8 x double> %4520, <8 x double> %4362
  store <8 x double> %4521, ptr %256, align 64, !tbaa !26
  %4522 = select <8 x i1> %4515, <8 x double> %4362, <8 x double> %4416
  store <8 x double> %4522, ptr %257, align 64, !tbaa !26
  %4523 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %4524 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %4525 = select <8 x i1> %4515, <8 x double> %4524, <8 x double> %4523
  store <8 x double> %4525, ptr %258, align 64, !tbaa !26
  %4526 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %4527 = select <8 x i1> %4515, <8 x double> %4523, <8 x double> %4526
  store <8 x double> %4527, ptr %259, align 64, !tbaa !26
  %4528 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %4529 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %4530 = select <8 x i1> %4515, <8 x double> %4529, <8 x double> %4528
  store <8 x double> %4530, ptr %261, align 64, !tbaa !26
  %4531 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %4532 = select <8 x i1> %4515, <8 x double> %4528, <8 x double> %4531
  store <8 x double> %4532, ptr %262, align 64, !tbaa !26
  %4533 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %4534 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %4535 = select <8 x i1> %4515, <8 x double> %4534, <8 x double> %4533
  store <8 x double> %4535, ptr %264, align 64, !tbaa !26
  %4536 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %4537 = select <8 x i1> %4515, <8 x double> %4533, <8 x double> %4536
  store <8 x double> %4537, ptr %265, align 64, !tbaa !26
  %4538 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %4539 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %4540 = select <8 x i1> %4515, <8 x double> %4539, <8 x double> %4538
  store <8 x double> %4540, ptr %267, align 64, !tbaa !26
  %4541 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %4542 = select <8 x i1> %4515, <8 x double> %4538, <8 x double> %4541
  store <8 x double> %4542, ptr %268, align 64, !tbaa !26
  %4543 = xor <8 x i64> %4455, splat (i64 -1)
  br i1 %4190, label %4544, label %4938

4544:                                             ; preds = %4514, %4903
  %4545 = phi i64 [ %4915, %4903 ], [ 0, %4514 ]
  %4546 = load ptr, ptr %130, align 8, !tbaa !28
  %4547 = getelementptr inbounds nuw %struct.Piece, ptr %4546, i64 %4545
  %4548 = getelementptr inbounds nuw i8, ptr %4547, i64 1664
  %4549 = load <8 x double>, ptr %4548, align 64, !tbaa !26
  %4550 = fcmp ogt <8 x double> %4549, zeroinitializer
  %4551 = bitcast <8 x i1> %4550 to i8
  %4552 = icmp eq i8 %4551, 0
  br i1 %4552, label %4810, label %4553

4553:                                             ; preds = %4544
  %4554 = load i64, ptr %119, align 16, !tbaa !21
  %4555 = add i64 %4554, -1
  %4556 = getelementptr inbounds nuw i8, ptr %4547, i64 4672
  %4557 = load <8 x double>, ptr %4556, align 64, !tbaa !26
  %4558 = getelementptr inbounds nuw i8, ptr %4547, i64 3776
  %4559 = load <8 x double>, ptr %4558, align 64, !tbaa !26
  %4560 = getelementptr inbounds nuw i8, ptr %4547, i64 8512
  %4561 = load i64, ptr %4560, align 64, !tbaa !31
  %4562 = icmp sgt i64 %4554, %4561
  br i1 %4562, label %4571, label %4563

4563:                                             ; preds = %4553
  %4564 = getelementptr inbounds nuw i8, ptr %4547, i64 8672
  %4565 = load ptr, ptr %4564, align 32, !tbaa !73
  %4566 = getelementptr inbounds <8 x double>, ptr %4565, i64 %4555
  %4567 = load <8 x double>, ptr %4566, align 64, !tbaa !26
  %4568 = getelementptr inbounds nuw i8, ptr %4547, i64 1536
  %4569 = load <8 x double>, ptr %4568, align 64, !tbaa !26
  %4570 = fmul <8 x double> %4567, %4569
  br label %4580

4571:                                             ; preds = %4553
  %4572 = getelementptr inbounds nuw i8, ptr %4547, i64 1536
  %4573 = load <8 x double>, ptr %4572, align 64, !tbaa !26
  %4574 = getelementptr inbounds nuw i8, ptr %4547, i64 8672
  %4575 = load ptr, ptr %4574, align 32, !tbaa !73
  %4576 = getelementptr inbounds <8 x double>, ptr %4575, i64 %4555
  %4577 = load <8 x double>, ptr %4576, align 64, !tbaa !26
  %4578 = fsub <8 x double> %4557, %4573
  %4579 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4577, <8 x double> %4578, <8 x double> %4573)
  br label %4580

4580:                                             ; preds = %4571, %4563
  %4581 = phi <8 x double> [ %4569, %4563 ], [ %4573, %4571 ]
  %4582 = phi <8 x double> [ %4570, %4563 ], [ %4579, %4571 ]
  %4583 = getelementptr inbounds nuw i8, ptr %4547, i64 3008
  %4584 = load <8 x double>, ptr %4583, align 64, !tbaa !26
  %4585 = fcmp ole <8 x double> %4582, %4584
  %4586 = getelementptr inbounds nuw i8, ptr %4547, i64 7616
  %4587 = load <8 x double>, ptr %4586, align 64, !tbaa !26
  %4588 = fcmp oeq <8 x double> %4587, zeroinitializer
  %4589 = select <8 x i1> %4588, <8 x i1> %4585, <8 x i1> zeroinitializer
  %4590 = select <8 x i1> %4589, <8 x i64> %4455, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %4591 = xor <8 x i64> %4590, %4455
  store <8 x i64> %4591, ptr %12, align 64, !tbaa !26
  %4592 = fsub <8 x double> %4557, %4559
  %4593 = getelementptr inbounds nuw i8, ptr %4547, i64 1536
  %4594 = fsub <8 x double> %4559, %4581
  %4595 = fdiv <8 x double> %4592, %4594
  %4596 = getelementptr inbounds nuw i8, ptr %4547, i64 8616
  %4597 = load ptr, ptr %4596, align 8, !tbaa !65
  %4598 = getelementptr inbounds <8 x double>, ptr %4597, i64 %4561
  %4599 = load <8 x double>, ptr %4598, align 64, !tbaa !26
  %4600 = getelementptr inbounds nuw i8, ptr %4547, i64 8624
  %4601 = load ptr, ptr %4600, align 16, !tbaa !47
  %4602 = getelementptr inbounds <8 x double>, ptr %4601, i64 %4561
  %4603 = load <8 x double>, ptr %4602, align 64, !tbaa !26
  %4604 = icmp eq <8 x i64> %4590, zeroinitializer
  %4605 = select <8 x i1> %4604, <8 x double> %4603, <8 x double> %4599
  store <8 x double> %4605, ptr %4602, align 64, !tbaa !26
  %4606 = load i64, ptr %4560, align 64, !tbaa !31
  %4607 = add nsw i64 %4606, 1
  %4608 = icmp slt i64 %4607, %4555
  br i1 %4608, label %4609, label %4613

4609:                                             ; preds = %4580
  %4610 = getelementptr inbounds nuw i8, ptr %4547, i64 8688
  br label %4653

4611:                                             ; preds = %4653
  %4612 = load i64, ptr %4560, align 64, !tbaa !31
  br label %4613

4613:                                             ; preds = %4611, %4580
  %4614 = phi i64 [ %4606, %4580 ], [ %4612, %4611 ]
  %4615 = phi <8 x double> [ %4599, %4580 ], [ %4658, %4611 ]
  %4616 = icmp sgt i64 %4554, %4614
  br i1 %4616, label %4624, label %4617

4617:                                             ; preds = %4613
  %4618 = getelementptr inbounds nuw i8, ptr %4547, i64 8672
  %4619 = load ptr, ptr %4618, align 32, !tbaa !73
  %4620 = getelementptr inbounds <8 x double>, ptr %4619, i64 %4555
  %4621 = load <8 x double>, ptr %4620, align 64, !tbaa !26
  %4622 = load <8 x double>, ptr %4593, align 64, !tbaa !26
  %4623 = fmul <8 x double> %4621, %4622
  br label %4632

4624:                                             ; preds = %4613
  %4625 = load <8 x double>, ptr %4593, align 64, !tbaa !26
  %4626 = getelementptr inbounds nuw i8, ptr %4547, i64 8672
  %4627 = load ptr, ptr %4626, align 32, !tbaa !73
  %4628 = getelementptr inbounds <8 x double>, ptr %4627, i64 %4555
  %4629 = load <8 x double>, ptr %4628, align 64, !tbaa !26
  %4630 = fsub <8 x double> %4559, %4625
  %4631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4629, <8 x double> %4630, <8 x double> %4625)
  br label %4632

4632:                                             ; preds = %4624, %4617
  %4633 = phi <8 x double> [ %4623, %4617 ], [ %4631, %4624 ]
  %4634 = load ptr, ptr %4596, align 8, !tbaa !65
  %4635 = getelementptr inbounds <8 x double>, ptr %4634, i64 %4555
  %4636 = load <8 x double>, ptr %4635, align 64, !tbaa !26
  %4637 = load ptr, ptr %4600, align 16, !tbaa !47
  %4638 = getelementptr inbounds <8 x double>, ptr %4637, i64 %4555
  %4639 = fsub <8 x double> %4615, %4636
  %4640 = fsub <8 x double> %4582, %4633
  %4641 = load <8 x double>, ptr %4583, align 64, !tbaa !26
  %4642 = fsub <8 x double> %4641, %4633
  %4643 = fdiv <8 x double> %4640, %4642
  %4644 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4639, <8 x double> %4643, <8 x double> %4636)
  %4645 = load <8 x double>, ptr %4638, align 64, !tbaa !26
  %4646 = select <8 x i1> %4604, <8 x double> %4645, <8 x double> %4644
  store <8 x double> %4646, ptr %4638, align 64, !tbaa !26
  %4647 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4591)
  %4648 = icmp eq i64 %4647, 0
  br i1 %4648, label %4809, label %4649

4649:                                             ; preds = %4632
  %4650 = getelementptr inbounds nuw i8, ptr %4547, i64 8672
  %4651 = getelementptr inbounds nuw i8, ptr %4547, i64 3136
  %4652 = getelementptr inbounds nuw i8, ptr %4547, i64 832
  br label %4671

4653:                                             ; preds = %4609, %4653
  %4654 = phi i64 [ %4607, %4609 ], [ %4669, %4653 ]
  %4655 = phi <8 x double> [ %4599, %4609 ], [ %4658, %4653 ]
  %4656 = load ptr, ptr %4596, align 8, !tbaa !65
  %4657 = getelementptr inbounds <8 x double>, ptr %4656, i64 %4654
  %4658 = load <8 x double>, ptr %4657, align 64, !tbaa !26
  %4659 = load ptr, ptr %4600, align 16, !tbaa !47
  %4660 = getelementptr inbounds <8 x double>, ptr %4659, i64 %4654
  %4661 = fsub <8 x double> %4655, %4658
  %4662 = load ptr, ptr %4610, align 16, !tbaa !140
  %4663 = getelementptr inbounds <8 x double>, ptr %4662, i64 %4654
  %4664 = load <8 x double>, ptr %4663, align 64, !tbaa !26
  %4665 = fmul <8 x double> %4595, %4664
  %4666 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4661, <8 x double> %4665, <8 x double> %4658)
  %4667 = load <8 x double>, ptr %4660, align 64, !tbaa !26
  %4668 = select <8 x i1> %4604, <8 x double> %4667, <8 x double> %4666
  store <8 x double> %4668, ptr %4660, align 64, !tbaa !26
  %4669 = add nsw i64 %4654, 1
  %4670 = icmp eq i64 %4669, %4555
  br i1 %4670, label %4611, label %4653, !llvm.loop !141

4671:                                             ; preds = %4649, %4806
  %4672 = phi i64 [ 0, %4649 ], [ %4807, %4806 ]
  %4673 = getelementptr inbounds nuw i64, ptr %12, i64 %4672
  %4674 = load i64, ptr %4673, align 8, !tbaa !30
  %4675 = icmp eq i64 %4674, 0
  br i1 %4675, label %4806, label %4676

4676:                                             ; preds = %4671
  %4677 = load i64, ptr %119, align 16, !tbaa !21
  %4678 = load i64, ptr %4560, align 64, !tbaa !31
  %4679 = getelementptr inbounds nuw double, ptr %4593, i64 %4672
  %4680 = load double, ptr %4679, align 8, !tbaa !41
  %4681 = getelementptr inbounds nuw double, ptr %4583, i64 %4672
  %4682 = load double, ptr %4681, align 8, !tbaa !41
  %4683 = add nsw i64 %4677, -1
  %4684 = icmp sgt i64 %4677, %4678
  br i1 %4684, label %4685, label %4806

4685:                                             ; preds = %4676
  %4686 = getelementptr inbounds nuw double, ptr %4558, i64 %4672
  %4687 = load double, ptr %4686, align 8, !tbaa !41
  %4688 = getelementptr inbounds nuw double, ptr %4556, i64 %4672
  %4689 = load double, ptr %4688, align 8, !tbaa !41
  %4690 = load ptr, ptr %4650, align 32
  %4691 = getelementptr i8, ptr %4690, i64 64
  %4692 = getelementptr double, ptr %4691, i64 %4672
  %4693 = fsub double %4687, %4680
  %4694 = getelementptr double, ptr %4690, i64 %4672
  %4695 = fsub double %4689, %4680
  %4696 = load ptr, ptr %4596, align 8, !tbaa !65
  %4697 = getelementptr double, ptr %4696, i64 %4672
  %4698 = load ptr, ptr %4600, align 16, !tbaa !47
  %4699 = getelementptr double, ptr %4698, i64 %4672
  %4700 = getelementptr <8 x double>, ptr %4694, i64 %4683
  br label %4728

4701:                                             ; preds = %4774
  %4702 = getelementptr inbounds nuw double, ptr %4586, i64 %4672
  %4703 = load double, ptr %4702, align 8, !tbaa !41
  %4704 = fcmp ogt double %4703, 0.000000e+00
  %4705 = fcmp ogt double %4785, 0.000000e+00
  %4706 = select i1 %4704, i1 %4705, i1 false
  br i1 %4706, label %4707, label %4806

4707:                                             ; preds = %4701
  %4708 = getelementptr inbounds nuw double, ptr %4651, i64 %4672
  %4709 = getelementptr inbounds nuw double, ptr %4652, i64 %4672
  %4710 = sub i64 %4677, %4678
  %4711 = add i64 %4678, 1
  %4712 = and i64 %4710, 1
  %4713 = icmp eq i64 %4712, 0
  br i1 %4713, label %4723, label %4714

4714:                                             ; preds = %4707
  %4715 = load double, ptr %4708, align 8, !tbaa !41
  %4716 = load double, ptr %4709, align 8, !tbaa !41
  %4717 = fmul double %4785, %4716
  %4718 = fdiv double %4715, %4717
  %4719 = getelementptr <8 x double>, ptr %4699, i64 %4678
  %4720 = load double, ptr %4719, align 8, !tbaa !41
  %4721 = fmul double %4720, %4718
  store double %4721, ptr %4719, align 8, !tbaa !41
  %4722 = add nsw i64 %4678, 1
  br label %4723

4723:                                             ; preds = %4714, %4707
  %4724 = phi i64 [ %4678, %4707 ], [ %4722, %4714 ]
  %4725 = icmp eq i64 %4677, %4711
  br i1 %4725, label %4806, label %4726

4726:                                             ; preds = %4723
  %4727 = getelementptr i8, ptr %4699, i64 64
  br label %4788

4728:                                             ; preds = %4774, %4685
  %4729 = phi double [ 0.000000e+00, %4685 ], [ %4785, %4774 ]
  %4730 = phi i64 [ %4683, %4685 ], [ %4786, %4774 ]
  %4731 = icmp eq i64 %4730, %4683
  br i1 %4731, label %4732, label %4735

4732:                                             ; preds = %4728
  %4733 = load double, ptr %4700, align 8, !tbaa !41
  %4734 = tail call noundef double @llvm.fmuladd.f64(double %4733, double %4693, double %4680)
  br label %4746

4735:                                             ; preds = %4728
  %4736 = getelementptr <8 x double>, ptr %4692, i64 %4730
  %4737 = load double, ptr %4736, align 8, !tbaa !41
  %4738 = tail call noundef double @llvm.fmuladd.f64(double %4737, double %4693, double %4680)
  %4739 = getelementptr <8 x double>, ptr %4694, i64 %4730
  %4740 = load double, ptr %4739, align 8, !tbaa !41
  %4741 = tail call noundef double @llvm.fmuladd.f64(double %4740, double %4693, double %4680)
  %4742 = tail call noundef double @llvm.fmuladd.f64(double %4737, double %4695, double %4680)
  %4743 = fcmp ult double %4742, %4738
  br i1 %4743, label %4744, label %4746

4744:                                             ; preds = %4735
  %4745 = add nsw i64 %4730, 1
  br label %4746

4746:                                             ; preds = %4744, %4735, %4732
  %4747 = phi double [ %4741, %4744 ], [ %4741, %4735 ], [ %4734, %4732 ]
  %4748 = phi double [ %4738, %4744 ], [ %4738, %4735 ], [ %4682, %4732 ]
  %4749 = phi i64 [ %4745, %4744 ], [ %4730, %4735 ], [ %4683, %4732 ]
  %4750 = icmp sgt i64 %4749, %4678
  br i1 %4750, label %4751, label %4774

4751:                                             ; preds = %4746
  %4752 = load ptr, ptr %4596, align 8
  %4753 = getelementptr double, ptr %4752, i64 %4672
  br label %4754

4754:                                             ; preds = %4769, %4751
  %4755 = phi i64 [ %4749, %4751 ], [ %4772, %4769 ]
  %4756 = phi double [ 0.000000e+00, %4751 ], [ %4771, %4769 ]
  %4757 = phi double [ %4748, %4751 ], [ %4770, %4769 ]
  %4758 = getelementptr <8 x double>, ptr %4694, i64 %4755
  %4759 = load double, ptr %4758, align 8, !tbaa !41
  %4760 = tail call noundef double @llvm.fmuladd.f64(double %4759, double %4695, double %4680)
  %4761 = fcmp ogt double %4760, %4747
  br i1 %4761, label %4762, label %4774

4762:                                             ; preds = %4754
  %4763 = fcmp ogt double %4757, %4760
  br i1 %4763, label %4764, label %4769

4764:                                             ; preds = %4762
  %4765 = getelementptr <8 x double>, ptr %4753, i64 %4755
  %4766 = load double, ptr %4765, align 8, !tbaa !41
  %4767 = fsub double %4757, %4760
  %4768 = tail call double @llvm.fmuladd.f64(double %4766, double %4767, double %4756)
  br label %4769

4769:                                             ; preds = %4764, %4762
  %4770 = phi double [ %4760, %4764 ], [ %4757, %4762 ]
  %4771 = phi double [ %4768, %4764 ], [ %4756, %4762 ]
  %4772 = add nsw i64 %4755, -1
  %4773 = icmp sgt i64 %4772, %4678
  br i1 %4773, label %4754, label %4774, !llvm.loop !142

4774:                                             ; preds = %4769, %4754, %4746
  %4775 = phi double [ %4748, %4746 ], [ %4757, %4754 ], [ %4770, %4769 ]
  %4776 = phi double [ 0.000000e+00, %4746 ], [ %4756, %4754 ], [ %4771, %4769 ]
  %4777 = phi i64 [ %4749, %4746 ], [ %4755, %4754 ], [ %4678, %4769 ]
  %4778 = getelementptr <8 x double>, ptr %4697, i64 %4777
  %4779 = load double, ptr %4778, align 8, !tbaa !41
  %4780 = fsub double %4775, %4747
  %4781 = tail call double @llvm.fmuladd.f64(double %4779, double %4780, double %4776)
  %4782 = fsub double %4748, %4747
  %4783 = fdiv double %4781, %4782
  %4784 = getelementptr <8 x double>, ptr %4699, i64 %4730
  store double %4783, ptr %4784, align 8, !tbaa !41
  %4785 = fadd double %4729, %4781
  %4786 = add nsw i64 %4730, -1
  %4787 = icmp sgt i64 %4730, %4678
  br i1 %4787, label %4728, label %4701, !llvm.loop !143

4788:                                             ; preds = %4788, %4726
  %4789 = phi i64 [ %4724, %4726 ], [ %4804, %4788 ]
  %4790 = load double, ptr %4708, align 8, !tbaa !41
  %4791 = load double, ptr %4709, align 8, !tbaa !41
  %4792 = fmul double %4785, %4791
  %4793 = fdiv double %4790, %4792
  %4794 = getelementptr <8 x double>, ptr %4699, i64 %4789
  %4795 = load double, ptr %4794, align 8, !tbaa !41
  %4796 = fmul double %4795, %4793
  store double %4796, ptr %4794, align 8, !tbaa !41
  %4797 = load double, ptr %4708, align 8, !tbaa !41
  %4798 = load double, ptr %4709, align 8, !tbaa !41
  %4799 = fmul double %4785, %4798
  %4800 = fdiv double %4797, %4799
  %4801 = getelementptr <8 x double>, ptr %4727, i64 %4789
  %4802 = load double, ptr %4801, align 8, !tbaa !41
  %4803 = fmul double %4802, %4800
  store double %4803, ptr %4801, align 8, !tbaa !41
  %4804 = add nsw i64 %4789, 2
  %4805 = icmp eq i64 %4804, %4677
  br i1 %4805, label %4806, label %4788, !llvm.loop !144

4806:                                             ; preds = %4723, %4788, %4701, %4676, %4671
  %4807 = add nuw nsw i64 %4672, 1
  %4808 = icmp eq i64 %4807, 8
  br i1 %4808, label %4809, label %4671, !llvm.loop !145

4809:                                             ; preds = %4806, %4632
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  br label %4810

4810:                                             ; preds = %4544, %4809
  %4811 = load <8 x i64>, ptr %110, align 64, !tbaa !26
  %4812 = and <8 x i64> %4811, %4543
  %4813 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4812)
  %4814 = icmp eq i64 %4813, 0
  %4815 = getelementptr inbounds nuw i8, ptr %4547, i64 8584
  br i1 %4814, label %4816, label %4834

4816:                                             ; preds = %4810
  %4817 = getelementptr inbounds nuw i8, ptr %4547, i64 8592
  %4818 = getelementptr inbounds nuw i8, ptr %4547, i64 8600
  %4819 = load ptr, ptr %4818, align 8, !tbaa !35
  %4820 = load ptr, ptr %4817, align 8, !tbaa !35
  store ptr %4820, ptr %4818, align 8, !tbaa !35
  %4821 = load ptr, ptr %4815, align 8, !tbaa !35
  store ptr %4821, ptr %4817, align 8, !tbaa !35
  store ptr %4819, ptr %4815, align 8, !tbaa !35
  %4822 = getelementptr inbounds nuw i8, ptr %4547, i64 8704
  %4823 = getelementptr inbounds nuw i8, ptr %4547, i64 8712
  %4824 = getelementptr inbounds nuw i8, ptr %4547, i64 8720
  %4825 = load ptr, ptr %4824, align 8, !tbaa !35
  %4826 = load ptr, ptr %4823, align 8, !tbaa !35
  store ptr %4826, ptr %4824, align 8, !tbaa !35
  %4827 = load ptr, ptr %4822, align 8, !tbaa !35
  store ptr %4827, ptr %4823, align 8, !tbaa !35
  store ptr %4825, ptr %4822, align 8, !tbaa !35
  %4828 = getelementptr inbounds nuw i8, ptr %4547, i64 8752
  %4829 = getelementptr inbounds nuw i8, ptr %4547, i64 8760
  %4830 = getelementptr inbounds nuw i8, ptr %4547, i64 8768
  %4831 = load ptr, ptr %4830, align 8, !tbaa !35
  %4832 = load ptr, ptr %4829, align 8, !tbaa !35
  store ptr %4832, ptr %4830, align 8, !tbaa !35
  %4833 = load ptr, ptr %4828, align 8, !tbaa !35
  store ptr %4833, ptr %4829, align 8, !tbaa !35
  store ptr %4831, ptr %4828, align 8, !tbaa !35
  br label %4899

4834:                                             ; preds = %4810
  %4835 = load ptr, ptr %4815, align 8, !tbaa !58
  %4836 = getelementptr inbounds nuw i8, ptr %4547, i64 8592
  %4837 = load ptr, ptr %4836, align 16, !tbaa !46
  %4838 = getelementptr inbounds nuw i8, ptr %4547, i64 8600
  %4839 = load ptr, ptr %4838, align 8, !tbaa !57
  %4840 = load i64, ptr %119, align 16, !tbaa !21
  %4841 = icmp sgt i64 %4840, 0
  br i1 %4841, label %4842, label %4855

4842:                                             ; preds = %4834, %4842
  %4843 = phi i64 [ %4853, %4842 ], [ 0, %4834 ]
  %4844 = getelementptr inbounds nuw <8 x double>, ptr %4839, i64 %4843
  %4845 = getelementptr inbounds nuw <8 x double>, ptr %4837, i64 %4843
  %4846 = load <8 x double>, ptr %4845, align 64, !tbaa !26
  %4847 = load <8 x double>, ptr %4844, align 64, !tbaa !26
  %4848 = select <8 x i1> %4515, <8 x double> %4847, <8 x double> %4846
  store <8 x double> %4848, ptr %4844, align 64, !tbaa !26
  %4849 = getelementptr inbounds nuw <8 x double>, ptr %4835, i64 %4843
  %4850 = load <8 x double>, ptr %4849, align 64, !tbaa !26
  %4851 = load <8 x double>, ptr %4845, align 64, !tbaa !26
  %4852 = select <8 x i1> %4515, <8 x double> %4851, <8 x double> %4850
  store <8 x double> %4852, ptr %4845, align 64, !tbaa !26
  %4853 = add nuw nsw i64 %4843, 1
  %4854 = icmp eq i64 %4853, %4840
  br i1 %4854, label %4855, label %4842, !llvm.loop !146

4855:                                             ; preds = %4842, %4834
  %4856 = getelementptr inbounds nuw i8, ptr %4547, i64 8704
  %4857 = load ptr, ptr %4856, align 64, !tbaa !128
  %4858 = getelementptr inbounds nuw i8, ptr %4547, i64 8712
  %4859 = load ptr, ptr %4858, align 8, !tbaa !50
  %4860 = getelementptr inbounds nuw i8, ptr %4547, i64 8720
  %4861 = load ptr, ptr %4860, align 16, !tbaa !62
  %4862 = load i64, ptr %120, align 8, !tbaa !22
  %4863 = icmp sgt i64 %4862, 0
  br i1 %4863, label %4864, label %4899

4864:                                             ; preds = %4855, %4864
  %4865 = phi i64 [ %4875, %4864 ], [ 0, %4855 ]
  %4866 = getelementptr inbounds nuw <8 x double>, ptr %4861, i64 %4865
  %4867 = getelementptr inbounds nuw <8 x double>, ptr %4859, i64 %4865
  %4868 = load <8 x double>, ptr %4867, align 64, !tbaa !26
  %4869 = load <8 x double>, ptr %4866, align 64, !tbaa !26
  %4870 = select <8 x i1> %4515, <8 x double> %4869, <8 x double> %4868
  store <8 x double> %4870, ptr %4866, align 64, !tbaa !26
  %4871 = getelementptr inbounds nuw <8 x double>, ptr %4857, i64 %4865
  %4872 = load <8 x double>, ptr %4871, align 64, !tbaa !26
  %4873 = load <8 x double>, ptr %4867, align 64, !tbaa !26
  %4874 = select <8 x i1> %4515, <8 x double> %4873, <8 x double> %4872
  store <8 x double> %4874, ptr %4867, align 64, !tbaa !26
  %4875 = add nuw nsw i64 %4865, 1
  %4876 = icmp eq i64 %4875, %4862
  br i1 %4876, label %4877, label %4864, !llvm.loop !146

4877:                                             ; preds = %4864
  %4878 = load i64, ptr %120, align 8, !tbaa !22
  %4879 = getelementptr inbounds nuw i8, ptr %4547, i64 8752
  %4880 = load ptr, ptr %4879, align 16, !tbaa !91
  %4881 = getelementptr inbounds nuw i8, ptr %4547, i64 8760
  %4882 = load ptr, ptr %4881, align 8, !tbaa !49
  %4883 = getelementptr inbounds nuw i8, ptr %4547, i64 8768
  %4884 = load ptr, ptr %4883, align 64, !tbaa !60
  %4885 = icmp sgt i64 %4878, 0
  br i1 %4885, label %4886, label %4899

4886:                                             ; preds = %4877, %4886
  %4887 = phi i64 [ %4897, %4886 ], [ 0, %4877 ]
  %4888 = getelementptr inbounds nuw <8 x double>, ptr %4884, i64 %4887
  %4889 = getelementptr inbounds nuw <8 x double>, ptr %4882, i64 %4887
  %4890 = load <8 x double>, ptr %4889, align 64, !tbaa !26
  %4891 = load <8 x double>, ptr %4888, align 64, !tbaa !26
  %4892 = select <8 x i1> %4515, <8 x double> %4891, <8 x double> %4890
  store <8 x double> %4892, ptr %4888, align 64, !tbaa !26
  %4893 = getelementptr inbounds nuw <8 x double>, ptr %4880, i64 %4887
  %4894 = load <8 x double>, ptr %4893, align 64, !tbaa !26
  %4895 = load <8 x double>, ptr %4889, align 64, !tbaa !26
  %4896 = select <8 x i1> %4515, <8 x double> %4895, <8 x double> %4894
  store <8 x double> %4896, ptr %4889, align 64, !tbaa !26
  %4897 = add nuw nsw i64 %4887, 1
  %4898 = icmp eq i64 %4897, %4878
  br i1 %4898, label %4899, label %4886, !llvm.loop !146

4899:                                             ; preds = %4886, %4855, %4877, %4816
  %4900 = getelementptr inbounds nuw i8, ptr %4547, i64 4736
  %4901 = getelementptr inbounds nuw i8, ptr %4547, i64 3840
  %4902 = getelementptr inbounds nuw i8, ptr %4547, i64 2944
  br label %4918

4903:                                             ; preds = %4918
  %4904 = getelementptr inbounds nuw i8, ptr %4547, i64 8384
  %4905 = getelementptr inbounds nuw i8, ptr %4547, i64 6080
  %4906 = load <8 x double>, ptr %4905, align 64, !tbaa !26
  %4907 = fcmp ogt <8 x double> %4906, zeroinitializer
  %4908 = load <8 x double>, ptr %139, align 64, !tbaa !26
  %4909 = fcmp une <8 x double> %4908, splat (double 2.000000e+00)
  %4910 = and <8 x i1> %4907, %4909
  %4911 = select <8 x i1> %4910, <8 x i64> %4455, <8 x i64> zeroinitializer
  %4912 = load <8 x i64>, ptr %4904, align 64, !tbaa !26
  %4913 = and <8 x i64> %4912, %4543
  %4914 = or <8 x i64> %4911, %4913
  store <8 x i64> %4914, ptr %4904, align 64, !tbaa !26
  %4915 = add nuw nsw i64 %4545, 1
  %4916 = load i64, ptr %157, align 8, !tbaa !20
  %4917 = icmp slt i64 %4915, %4916
  br i1 %4917, label %4544, label %4930, !llvm.loop !147

4918:                                             ; preds = %4899, %4918
  %4919 = phi i64 [ 0, %4899 ], [ %4928, %4918 ]
  %4920 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4900, i64 0, i64 %4919
  %4921 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4901, i64 0, i64 %4919
  %4922 = load <8 x double>, ptr %4921, align 64, !tbaa !26
  %4923 = load <8 x double>, ptr %4920, align 64, !tbaa !26
  %4924 = select <8 x i1> %4515, <8 x double> %4923, <8 x double> %4922
  store <8 x double> %4924, ptr %4920, align 64, !tbaa !26
  %4925 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4902, i64 0, i64 %4919
  %4926 = load <8 x double>, ptr %4925, align 64, !tbaa !26
  %4927 = select <8 x i1> %4515, <8 x double> %4922, <8 x double> %4926
  store <8 x double> %4927, ptr %4921, align 64, !tbaa !26
  %4928 = add nuw nsw i64 %4919, 1
  %4929 = icmp eq i64 %4928, 14
  br i1 %4929, label %4903, label %4918, !llvm.loop !148

4930:                                             ; preds = %4903
  %4931 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4932 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %4933 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %4934 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4935 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %4936 = fdiv <8 x double> %4933, %4159
  %4937 = icmp sgt i64 %4916, 0
  br label %4938

4938:                                             ; preds = %4514, %4930
  %4939 = phi <8 x double> [ %4936, %4930 ], [ %4169, %4514 ]
  %4940 = phi i1 [ %4937, %4930 ], [ false, %4514 ]
  %4941 = phi <8 x double> [ %4935, %4930 ], [ %4148, %4514 ]
  %4942 = phi <8 x double> [ %4934, %4930 ], [ %4443, %4514 ]
  %4943 = phi <8 x double> [ %4932, %4930 ], [ %4165, %4514 ]
  %4944 = phi <8 x double> [ %4931, %4930 ], [ %4163, %4514 ]
  %4945 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %4946 = fadd <8 x double> %4945, %4944
  %4947 = select <8 x i1> %4515, <8 x double> %4945, <8 x double> %4946
  store <8 x double> %4947, ptr %137, align 64, !tbaa !26
  %4948 = load <8 x double>, ptr %152, align 64, !tbaa !26
  %4949 = select <8 x i1> %4515, <8 x double> %4948, <8 x double> %4944
  store <8 x double> %4949, ptr %152, align 64, !tbaa !26
  %4950 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %4951 = fadd <8 x double> %4950, splat (double 1.000000e+00)
  %4952 = select <8 x i1> %4515, <8 x double> %4950, <8 x double> %4951
  store <8 x double> %4952, ptr %123, align 64, !tbaa !26
  %4953 = load <8 x double>, ptr %125, align 64, !tbaa !26
  %4954 = fcmp olt <8 x double> %4953, %4944
  %4955 = select <8 x i1> %4515, <8 x i1> splat (i1 true), <8 x i1> %4954
  %4956 = select <8 x i1> %4955, <8 x double> %4953, <8 x double> %4944
  store <8 x double> %4956, ptr %125, align 64, !tbaa !26
  %4957 = fcmp une <8 x double> %4943, zeroinitializer
  %4958 = fcmp ueq <8 x double> %4158, zeroinitializer
  %4959 = or <8 x i1> %4958, %4957
  %4960 = fcmp olt <8 x double> %4939, splat (double 1.800000e+00)
  %4961 = select <8 x i1> %4960, <8 x double> %4939, <8 x double> splat (double 1.800000e+00)
  %4962 = select <8 x i1> %4959, <8 x double> splat (double 1.800000e+00), <8 x double> %4961
  %4963 = fcmp ogt <8 x double> %4962, splat (double 2.000000e-01)
  %4964 = select <8 x i1> %4963, <8 x double> %4962, <8 x double> splat (double 2.000000e-01)
  %4965 = fmul <8 x double> %4944, %4964
  %4966 = fmul <8 x double> %4944, splat (double 4.000000e+00)
  %4967 = fcmp olt <8 x double> %4942, %4966
  %4968 = select <8 x i1> %4967, <8 x double> %4942, <8 x double> %4966
  %4969 = fcmp ogt <8 x double> %4965, %4968
  %4970 = select <8 x i1> %4969, <8 x double> %4965, <8 x double> %4968
  %4971 = select <8 x i1> %4515, <8 x double> %4942, <8 x double> zeroinitializer
  store <8 x double> %4971, ptr %160, align 64, !tbaa !26
  %4972 = select <8 x i1> %4515, <8 x double> %4941, <8 x double> zeroinitializer
  store <8 x double> %4972, ptr %162, align 64, !tbaa !26
  %4973 = load <8 x i64>, ptr %153, align 64, !tbaa !26
  %4974 = and <8 x i64> %4973, %4543
  store <8 x i64> %4974, ptr %153, align 64, !tbaa !26
  %4975 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %4976 = and <8 x i64> %4975, %4543
  store <8 x i64> %4976, ptr %154, align 64, !tbaa !26
  %4977 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %4978 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4979 = select <8 x i1> %4515, <8 x double> %4978, <8 x double> %4977
  store <8 x double> %4979, ptr %147, align 64, !tbaa !26
  br i1 %4940, label %4980, label %5445

4980:                                             ; preds = %4938, %5438
  %4981 = phi i64 [ %5440, %5438 ], [ 0, %4938 ]
  %4982 = phi <8 x double> [ %5439, %5438 ], [ %4970, %4938 ]
  %4983 = load ptr, ptr %130, align 8, !tbaa !28
  %4984 = getelementptr inbounds nuw %struct.Piece, ptr %4983, i64 %4981
  %4985 = getelementptr inbounds nuw i8, ptr %4984, i64 3904
  %4986 = load <8 x double>, ptr %4985, align 64, !tbaa !26
  %4987 = getelementptr inbounds nuw i8, ptr %4984, i64 1472
  %4988 = load <8 x double>, ptr %4987, align 64, !tbaa !26
  %4989 = fmul <8 x double> %4988, splat (double 1.001000e+00)
  %4990 = fcmp ole <8 x double> %4986, %4989
  %4991 = getelementptr inbounds nuw i8, ptr %4984, i64 1600
  %4992 = load <8 x double>, ptr %4991, align 64, !tbaa !26
  %4993 = getelementptr inbounds nuw i8, ptr %4984, i64 4160
  %4994 = load <8 x double>, ptr %4993, align 64, !tbaa !26
  %4995 = fsub <8 x double> %4992, %4994
  %4996 = fmul <8 x double> %4992, splat (double 1.000000e-04)
  %4997 = fcmp ole <8 x double> %4995, %4996
  %4998 = getelementptr inbounds nuw i8, ptr %4984, i64 8320
  %4999 = load <8 x i64>, ptr %4998, align 64, !tbaa !26
  %5000 = and <8 x i64> %4999, %4455
  %5001 = getelementptr inbounds nuw i8, ptr %4984, i64 7616
  %5002 = load <8 x double>, ptr %5001, align 64, !tbaa !26
  %5003 = fcmp oeq <8 x double> %5002, zeroinitializer
  %5004 = and <8 x i1> %4990, %5003
  %5005 = fcmp oeq <8 x double> %5002, splat (double 1.000000e+00)
  %5006 = and <8 x i1> %4997, %5005
  %5007 = or <8 x i1> %5004, %5006
  %5008 = select <8 x i1> %5007, <8 x i64> %5000, <8 x i64> zeroinitializer
  %5009 = fadd <8 x double> %5002, splat (double 1.000000e+00)
  %5010 = icmp eq <8 x i64> %5008, zeroinitializer
  %5011 = select <8 x i1> %5010, <8 x double> %5002, <8 x double> %5009
  store <8 x double> %5011, ptr %5001, align 64, !tbaa !26
  %5012 = getelementptr inbounds nuw i8, ptr %4984, i64 8384
  %5013 = load <8 x i64>, ptr %5012, align 64, !tbaa !26
  %5014 = or <8 x i64> %5008, %5013
  store <8 x i64> %5014, ptr %5012, align 64, !tbaa !26
  %5015 = getelementptr inbounds nuw i8, ptr %4984, i64 896
  %5016 = load <8 x double>, ptr %5015, align 64, !tbaa !26
  %5017 = getelementptr inbounds nuw i8, ptr %4984, i64 6016
  %5018 = load <8 x double>, ptr %5017, align 64, !tbaa !26
  %5019 = getelementptr inbounds nuw i8, ptr %4984, i64 6080
  %5020 = load <8 x double>, ptr %5019, align 64, !tbaa !26
  %5021 = fadd <8 x double> %5018, %5020
  %5022 = fcmp ogt <8 x double> %5021, zeroinitializer
  %5023 = xor <8 x i64> %4999, splat (i64 -1)
  %5024 = and <8 x i64> %4455, %5023
  %5025 = fcmp une <8 x double> %5016, zeroinitializer
  %5026 = or <8 x i1> %5025, %5022
  %5027 = getelementptr inbounds nuw i8, ptr %4984, i64 3968
  %5028 = load <8 x double>, ptr %5027, align 64, !tbaa !26
  %5029 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %5030 = fmul <8 x double> %5016, %5029
  %5031 = fcmp ogt <8 x double> %5030, splat (double 0x3E7AD7F29ABCAF48)
  %5032 = select <8 x i1> %5031, <8 x double> %5030, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5033 = fcmp ole <8 x double> %5028, %5032
  %5034 = select <8 x i1> %5033, <8 x i1> %5026, <8 x i1> zeroinitializer
  %5035 = select <8 x i1> %5034, <8 x i64> %5024, <8 x i64> zeroinitializer
  %5036 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5035)
  %5037 = icmp eq i64 %5036, 0
  br i1 %5037, label %5438, label %5038

5038:                                             ; preds = %4980
  %5039 = load i64, ptr %119, align 16, !tbaa !21
  %5040 = load i64, ptr %120, align 8, !tbaa !22
  %5041 = getelementptr inbounds nuw i8, ptr %4984, i64 3840
  %5042 = getelementptr inbounds nuw i8, ptr %4984, i64 4672
  %5043 = load <8 x double>, ptr %5042, align 64, !tbaa !26
  %5044 = getelementptr inbounds nuw i8, ptr %4984, i64 5952
  %5045 = load <8 x double>, ptr %5044, align 64, !tbaa !26
  %5046 = getelementptr inbounds nuw i8, ptr %4984, i64 832
  %5047 = load <8 x double>, ptr %5046, align 64, !tbaa !26
  %5048 = getelementptr inbounds nuw i8, ptr %4984, i64 8624
  %5049 = load ptr, ptr %5048, align 16, !tbaa !47
  %5050 = add nsw i64 %5039, -1
  %5051 = getelementptr inbounds <8 x double>, ptr %5049, i64 %5050
  %5052 = load <8 x double>, ptr %5051, align 64, !tbaa !26
  %5053 = fmul <8 x double> %5047, %5052
  %5054 = fneg <8 x double> %5028
  %5055 = fdiv <8 x double> %5054, %5053
  %5056 = fcmp ogt <8 x double> %5055, splat (double 0x3E7AD7F29ABCAF48)
  %5057 = select <8 x i1> %5056, <8 x double> %5055, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5058 = load <8 x double>, ptr %4984, align 64, !tbaa !26
  %5059 = fsub <8 x double> %5058, %5057
  %5060 = getelementptr inbounds nuw i8, ptr %4984, i64 2560
  %5061 = load <8 x double>, ptr %5060, align 64, !tbaa !26
  %5062 = getelementptr inbounds nuw i8, ptr %4984, i64 2624
  %5063 = load <8 x double>, ptr %5062, align 64, !tbaa !26
  %5064 = getelementptr inbounds nuw i8, ptr %4984, i64 2688
  %5065 = load <8 x double>, ptr %5064, align 64, !tbaa !26
  %5066 = getelementptr inbounds nuw i8, ptr %4984, i64 2752
  %5067 = load <8 x double>, ptr %5066, align 64, !tbaa !26
  %5068 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5059, <8 x double> %5067, <8 x double> %5065)
  %5069 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5059, <8 x double> %5068, <8 x double> %5063)
  %5070 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5059, <8 x double> %5069, <8 x double> %5061)
  %5071 = fsub <8 x double> %5043, %5070
  %5072 = getelementptr inbounds nuw i8, ptr %4984, i64 8592
  %5073 = load ptr, ptr %5072, align 16, !tbaa !46
  %5074 = getelementptr inbounds <8 x double>, ptr %5073, i64 %5050
  %5075 = load <8 x double>, ptr %5074, align 64, !tbaa !26
  %5076 = getelementptr inbounds nuw i8, ptr %4984, i64 8512
  %5077 = load i64, ptr %5076, align 64, !tbaa !31
  %5078 = icmp sgt i64 %5039, %5077
  br i1 %5078, label %5087, label %5079

5079:                                             ; preds = %5038
  %5080 = getelementptr inbounds nuw i8, ptr %4984, i64 640
  %5081 = load <8 x double>, ptr %5080, align 64, !tbaa !26
  %5082 = getelementptr inbounds nuw i8, ptr %4984, i64 8600
  %5083 = load ptr, ptr %5082, align 8, !tbaa !57
  %5084 = getelementptr inbounds <8 x double>, ptr %5083, i64 %5050
  %5085 = load <8 x double>, ptr %5084, align 64, !tbaa !26
  %5086 = fmul <8 x double> %5085, %5081
  br label %5107

5087:                                             ; preds = %5038
  %5088 = getelementptr inbounds nuw i8, ptr %4984, i64 384
  %5089 = load <8 x double>, ptr %5088, align 64, !tbaa !26
  %5090 = getelementptr inbounds nuw i8, ptr %4984, i64 448
  %5091 = load <8 x double>, ptr %5090, align 64, !tbaa !26
  %5092 = getelementptr inbounds nuw i8, ptr %4984, i64 512
  %5093 = load <8 x double>, ptr %5092, align 64, !tbaa !26
  %5094 = fmul <8 x double> %5075, %5093
  %5095 = fmul <8 x double> %5094, splat (double 0x3FD5555555555555)
  %5096 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5091, <8 x double> splat (double 5.000000e-01), <8 x double> %5095)
  %5097 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5075, <8 x double> %5096, <8 x double> %5089)
  %5098 = getelementptr inbounds nuw i8, ptr %4984, i64 8600
  %5099 = load ptr, ptr %5098, align 8, !tbaa !57
  %5100 = getelementptr inbounds <8 x double>, ptr %5099, i64 %5050
  %5101 = load <8 x double>, ptr %5100, align 64, !tbaa !26
  %5102 = fmul <8 x double> %5101, %5093
  %5103 = fmul <8 x double> %5102, splat (double 0x3FD5555555555555)
  %5104 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5091, <8 x double> splat (double 5.000000e-01), <8 x double> %5103)
  %5105 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5101, <8 x double> %5104, <8 x double> %5089)
  %5106 = fmul <8 x double> %5101, %5105
  br label %5107

5107:                                             ; preds = %5087, %5079
  %5108 = phi ptr [ %5099, %5087 ], [ %5083, %5079 ]
  %5109 = phi <8 x double> [ %5097, %5087 ], [ %5081, %5079 ]
  %5110 = phi <8 x double> [ %5106, %5087 ], [ %5086, %5079 ]
  %5111 = phi ptr [ %5098, %5087 ], [ %5082, %5079 ]
  %5112 = sitofp i64 %5040 to double
  %5113 = insertelement <8 x double> poison, double %5112, i64 0
  %5114 = shufflevector <8 x double> %5113, <8 x double> poison, <8 x i32> zeroinitializer
  %5115 = fmul <8 x double> %5075, %5109
  %5116 = fdiv <8 x double> %5057, %5114
  %5117 = getelementptr i8, ptr %5073, i64 -64
  %5118 = getelementptr i8, ptr %5049, i64 -64
  %5119 = icmp sgt i64 %5039, 0
  br i1 %5119, label %5120, label %5221

5120:                                             ; preds = %5107
  %5121 = fmul <8 x double> %5075, %5109
  %5122 = getelementptr inbounds nuw i8, ptr %4984, i64 640
  %5123 = getelementptr inbounds nuw i8, ptr %4984, i64 384
  %5124 = getelementptr inbounds nuw i8, ptr %4984, i64 448
  %5125 = getelementptr inbounds nuw i8, ptr %4984, i64 512
  %5126 = getelementptr inbounds nuw i8, ptr %4984, i64 1536
  %5127 = getelementptr inbounds nuw i8, ptr %4984, i64 8672
  %5128 = icmp eq <8 x i64> %5035, zeroinitializer
  br label %5129

5129:                                             ; preds = %5120, %5208
  %5130 = phi <8 x double> [ %5075, %5120 ], [ %5189, %5208 ]
  %5131 = phi <8 x double> [ %5121, %5120 ], [ %5188, %5208 ]
  %5132 = phi <8 x double> [ %5070, %5120 ], [ %5190, %5208 ]
  %5133 = phi <8 x double> [ %5052, %5120 ], [ %5191, %5208 ]
  %5134 = phi i64 [ %5050, %5120 ], [ %5214, %5208 ]
  %5135 = icmp eq i64 %5134, 0
  br i1 %5135, label %5136, label %5140

5136:                                             ; preds = %5129
  %5137 = fdiv <8 x double> zeroinitializer, %5132
  %5138 = fsub <8 x double> %5131, %5131
  %5139 = fmul <8 x double> %5137, %5138
  br label %5185

5140:                                             ; preds = %5129
  %5141 = getelementptr <8 x double>, ptr %5117, i64 %5134
  %5142 = load <8 x double>, ptr %5141, align 64, !tbaa !26
  %5143 = load i64, ptr %5076, align 64, !tbaa !31
  %5144 = icmp sgt i64 %5134, %5143
  br i1 %5144, label %5147, label %5145

5145:                                             ; preds = %5140
  %5146 = load <8 x double>, ptr %5122, align 64, !tbaa !26
  br label %5155

5147:                                             ; preds = %5140
  %5148 = load <8 x double>, ptr %5123, align 64, !tbaa !26
  %5149 = load <8 x double>, ptr %5124, align 64, !tbaa !26
  %5150 = load <8 x double>, ptr %5125, align 64, !tbaa !26
  %5151 = fmul <8 x double> %5142, %5150
  %5152 = fmul <8 x double> %5151, splat (double 0x3FD5555555555555)
  %5153 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5149, <8 x double> splat (double 5.000000e-01), <8 x double> %5152)
  %5154 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5142, <8 x double> %5153, <8 x double> %5148)
  br label %5155

5155:                                             ; preds = %5145, %5147
  %5156 = phi <8 x double> [ %5154, %5147 ], [ %5146, %5145 ]
  %5157 = fmul <8 x double> %5142, %5156
  %5158 = icmp slt i64 %5134, %5143
  br i1 %5158, label %5159, label %5166

5159:                                             ; preds = %5155
  %5160 = load ptr, ptr %5127, align 32, !tbaa !73
  %5161 = getelementptr inbounds nuw <8 x double>, ptr %5160, i64 %5134
  %5162 = load <8 x double>, ptr %5161, align 64, !tbaa !26
  %5163 = load <8 x double>, ptr %5126, align 64, !tbaa !26
  %5164 = fmul <8 x double> %5162, %5163
  %5165 = fmul <8 x double> %5162, %5163
  br label %5175

5166:                                             ; preds = %5155
  %5167 = load <8 x double>, ptr %5126, align 64, !tbaa !26
  %5168 = load ptr, ptr %5127, align 32, !tbaa !73
  %5169 = getelementptr inbounds nuw <8 x double>, ptr %5168, i64 %5134
  %5170 = load <8 x double>, ptr %5169, align 64, !tbaa !26
  %5171 = fsub <8 x double> %5070, %5167
  %5172 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5170, <8 x double> %5171, <8 x double> %5167)
  %5173 = fsub <8 x double> %5043, %5167
  %5174 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5170, <8 x double> %5173, <8 x double> %5167)
  br label %5175

5175:                                             ; preds = %5166, %5159
  %5176 = phi <8 x double> [ %5164, %5159 ], [ %5172, %5166 ]
  %5177 = phi <8 x double> [ %5165, %5159 ], [ %5174, %5166 ]
  %5178 = fsub <8 x double> %5177, %5176
  %5179 = fsub <8 x double> %5132, %5176
  %5180 = fdiv <8 x double> %5178, %5179
  %5181 = fsub <8 x double> %5157, %5131
  %5182 = fmul <8 x double> %5181, %5180
  %5183 = getelementptr <8 x double>, ptr %5118, i64 %5134
  %5184 = load <8 x double>, ptr %5183, align 64, !tbaa !26
  br label %5185

5185:                                             ; preds = %5175, %5136
  %5186 = phi <8 x double> [ %5182, %5175 ], [ %5139, %5136 ]
  %5187 = phi <8 x double> [ %5180, %5175 ], [ %5137, %5136 ]
  %5188 = phi <8 x double> [ %5157, %5175 ], [ %5131, %5136 ]
  %5189 = phi <8 x double> [ %5142, %5175 ], [ %5130, %5136 ]
  %5190 = phi <8 x double> [ %5176, %5175 ], [ zeroinitializer, %5136 ]
  %5191 = phi <8 x double> [ %5184, %5175 ], [ %5133, %5136 ]
  %5192 = getelementptr inbounds nuw <8 x double>, ptr %5049, i64 %5134
  %5193 = fsub <8 x double> %5191, %5133
  %5194 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5193, <8 x double> %5187, <8 x double> %5133)
  %5195 = load <8 x double>, ptr %5192, align 64, !tbaa !26
  %5196 = select <8 x i1> %5128, <8 x double> %5195, <8 x double> %5194
  store <8 x double> %5196, ptr %5192, align 64, !tbaa !26
  %5197 = getelementptr inbounds nuw <8 x double>, ptr %5073, i64 %5134
  %5198 = load i64, ptr %5076, align 64, !tbaa !31
  %5199 = icmp slt i64 %5134, %5198
  br i1 %5199, label %5200, label %5202

5200:                                             ; preds = %5185
  %5201 = load <8 x double>, ptr %5122, align 64, !tbaa !26
  br label %5208

5202:                                             ; preds = %5185
  %5203 = load <8 x double>, ptr %5123, align 64, !tbaa !26
  %5204 = load <8 x double>, ptr %5124, align 64, !tbaa !26
  %5205 = load <8 x double>, ptr %5125, align 64, !tbaa !26
  %5206 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5130, <8 x double> %5205, <8 x double> %5204)
  %5207 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5130, <8 x double> %5206, <8 x double> %5203)
  br label %5208

5208:                                             ; preds = %5202, %5200
  %5209 = phi <8 x double> [ %5201, %5200 ], [ %5207, %5202 ]
  %5210 = fdiv <8 x double> %5186, %5209
  %5211 = fadd <8 x double> %5130, %5210
  %5212 = load <8 x double>, ptr %5197, align 64, !tbaa !26
  %5213 = select <8 x i1> %5128, <8 x double> %5212, <8 x double> %5211
  store <8 x double> %5213, ptr %5197, align 64, !tbaa !26
  %5214 = add nsw i64 %5134, -1
  %5215 = icmp sgt i64 %5134, 0
  br i1 %5215, label %5129, label %5216, !llvm.loop !149

5216:                                             ; preds = %5208
  %5217 = load ptr, ptr %5111, align 8, !tbaa !57
  %5218 = load i64, ptr %119, align 16, !tbaa !21
  %5219 = load i64, ptr %5076, align 64, !tbaa !31
  %5220 = add nsw i64 %5218, -1
  br label %5221

5221:                                             ; preds = %5216, %5107
  %5222 = phi i64 [ %5220, %5216 ], [ %5050, %5107 ]
  %5223 = phi i64 [ %5219, %5216 ], [ %5077, %5107 ]
  %5224 = phi i64 [ %5218, %5216 ], [ %5039, %5107 ]
  %5225 = phi ptr [ %5217, %5216 ], [ %5108, %5107 ]
  %5226 = getelementptr inbounds <8 x double>, ptr %5225, i64 %5222
  %5227 = load <8 x double>, ptr %5226, align 64, !tbaa !26
  %5228 = icmp sgt i64 %5224, %5223
  br i1 %5228, label %5232, label %5229

5229:                                             ; preds = %5221
  %5230 = getelementptr inbounds nuw i8, ptr %4984, i64 640
  %5231 = load <8 x double>, ptr %5230, align 64, !tbaa !26
  br label %5243

5232:                                             ; preds = %5221
  %5233 = getelementptr inbounds nuw i8, ptr %4984, i64 384
  %5234 = load <8 x double>, ptr %5233, align 64, !tbaa !26
  %5235 = getelementptr inbounds nuw i8, ptr %4984, i64 448
  %5236 = load <8 x double>, ptr %5235, align 64, !tbaa !26
  %5237 = getelementptr inbounds nuw i8, ptr %4984, i64 512
  %5238 = load <8 x double>, ptr %5237, align 64, !tbaa !26
  %5239 = fmul <8 x double> %5227, %5238
  %5240 = fmul <8 x double> %5239, splat (double 0x3FD5555555555555)
  %5241 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5236, <8 x double> splat (double 5.000000e-01), <8 x double> %5240)
  %5242 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5227, <8 x double> %5241, <8 x double> %5234)
  br label %5243

5243:                                             ; preds = %5232, %5229
  %5244 = phi <8 x double> [ %5231, %5229 ], [ %5242, %5232 ]
  %5245 = getelementptr i8, ptr %5225, i64 -64
  %5246 = icmp sgt i64 %5224, 0
  br i1 %5246, label %5247, label %5256

5247:                                             ; preds = %5243
  %5248 = fmul <8 x double> %5227, %5244
  %5249 = getelementptr inbounds nuw i8, ptr %4984, i64 640
  %5250 = getelementptr inbounds nuw i8, ptr %4984, i64 384
  %5251 = getelementptr inbounds nuw i8, ptr %4984, i64 448
  %5252 = getelementptr inbounds nuw i8, ptr %4984, i64 512
  %5253 = getelementptr inbounds nuw i8, ptr %4984, i64 1536
  %5254 = getelementptr inbounds nuw i8, ptr %4984, i64 8672
  %5255 = icmp eq <8 x i64> %5035, zeroinitializer
  br label %5264

5256:                                             ; preds = %5328, %5243
  %5257 = icmp sgt i64 %5040, 0
  br i1 %5257, label %5258, label %5336

5258:                                             ; preds = %5256
  %5259 = getelementptr inbounds nuw i8, ptr %4984, i64 8760
  %5260 = icmp eq <8 x i64> %5035, zeroinitializer
  %5261 = getelementptr inbounds nuw i8, ptr %4984, i64 8768
  %5262 = getelementptr inbounds nuw i8, ptr %4984, i64 8712
  %5263 = getelementptr inbounds nuw i8, ptr %4984, i64 8720
  br label %5407

5264:                                             ; preds = %5247, %5328
  %5265 = phi <8 x double> [ %5227, %5247 ], [ %5311, %5328 ]
  %5266 = phi <8 x double> [ %5248, %5247 ], [ %5312, %5328 ]
  %5267 = phi <8 x double> [ %5070, %5247 ], [ %5310, %5328 ]
  %5268 = phi i64 [ %5222, %5247 ], [ %5334, %5328 ]
  %5269 = icmp eq i64 %5268, 0
  %5270 = load i64, ptr %5076, align 64, !tbaa !31
  br i1 %5269, label %5309, label %5271

5271:                                             ; preds = %5264
  %5272 = getelementptr <8 x double>, ptr %5245, i64 %5268
  %5273 = load <8 x double>, ptr %5272, align 64, !tbaa !26
  %5274 = icmp sgt i64 %5268, %5270
  br i1 %5274, label %5277, label %5275

5275:                                             ; preds = %5271
  %5276 = load <8 x double>, ptr %5249, align 64, !tbaa !26
  br label %5285

5277:                                             ; preds = %5271
  %5278 = load <8 x double>, ptr %5250, align 64, !tbaa !26
  %5279 = load <8 x double>, ptr %5251, align 64, !tbaa !26
  %5280 = load <8 x double>, ptr %5252, align 64, !tbaa !26
  %5281 = fmul <8 x double> %5273, %5280
  %5282 = fmul <8 x double> %5281, splat (double 0x3FD5555555555555)
  %5283 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5279, <8 x double> splat (double 5.000000e-01), <8 x double> %5282)
  %5284 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5273, <8 x double> %5283, <8 x double> %5278)
  br label %5285

5285:                                             ; preds = %5275, %5277
  %5286 = phi <8 x double> [ %5284, %5277 ], [ %5276, %5275 ]
  %5287 = fmul <8 x double> %5273, %5286
  %5288 = icmp slt i64 %5268, %5270
  br i1 %5288, label %5289, label %5296

5289:                                             ; preds = %5285
  %5290 = load ptr, ptr %5254, align 32, !tbaa !73
  %5291 = getelementptr inbounds nuw <8 x double>, ptr %5290, i64 %5268
  %5292 = load <8 x double>, ptr %5291, align 64, !tbaa !26
  %5293 = load <8 x double>, ptr %5253, align 64, !tbaa !26
  %5294 = fmul <8 x double> %5292, %5293
  %5295 = fmul <8 x double> %5292, %5293
  br label %5305

5296:                                             ; preds = %5285
  %5297 = load <8 x double>, ptr %5253, align 64, !tbaa !26
  %5298 = load ptr, ptr %5254, align 32, !tbaa !73
  %5299 = getelementptr inbounds nuw <8 x double>, ptr %5298, i64 %5268
  %5300 = load <8 x double>, ptr %5299, align 64, !tbaa !26
  %5301 = fsub <8 x double> %5070, %5297
  %5302 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5300, <8 x double> %5301, <8 x double> %5297)
  %5303 = fsub <8 x double> %5043, %5297
  %5304 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5300, <8 x double> %5303, <8 x double> %5297)
  br label %5305

5305:                                             ; preds = %5296, %5289
  %5306 = phi <8 x double> [ %5294, %5289 ], [ %5302, %5296 ]
  %5307 = phi <8 x double> [ %5295, %5289 ], [ %5304, %5296 ]
  %5308 = fsub <8 x double> %5307, %5306
  br label %5309

5309:                                             ; preds = %5264, %5305
  %5310 = phi <8 x double> [ %5306, %5305 ], [ zeroinitializer, %5264 ]
  %5311 = phi <8 x double> [ %5273, %5305 ], [ %5265, %5264 ]
  %5312 = phi <8 x double> [ %5287, %5305 ], [ %5266, %5264 ]
  %5313 = phi <8 x double> [ %5308, %5305 ], [ zeroinitializer, %5264 ]
  %5314 = fsub <8 x double> %5267, %5310
  %5315 = fdiv <8 x double> %5313, %5314
  %5316 = fsub <8 x double> %5312, %5266
  %5317 = fmul <8 x double> %5316, %5315
  %5318 = getelementptr inbounds nuw <8 x double>, ptr %5225, i64 %5268
  %5319 = icmp slt i64 %5268, %5270
  br i1 %5319, label %5320, label %5322

5320:                                             ; preds = %5309
  %5321 = load <8 x double>, ptr %5249, align 64, !tbaa !26
  br label %5328

5322:                                             ; preds = %5309
  %5323 = load <8 x double>, ptr %5250, align 64, !tbaa !26
  %5324 = load <8 x double>, ptr %5251, align 64, !tbaa !26
  %5325 = load <8 x double>, ptr %5252, align 64, !tbaa !26
  %5326 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5265, <8 x double> %5325, <8 x double> %5324)
  %5327 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5265, <8 x double> %5326, <8 x double> %5323)
  br label %5328

5328:                                             ; preds = %5322, %5320
  %5329 = phi <8 x double> [ %5321, %5320 ], [ %5327, %5322 ]
  %5330 = fdiv <8 x double> %5317, %5329
  %5331 = fadd <8 x double> %5265, %5330
  %5332 = load <8 x double>, ptr %5318, align 64, !tbaa !26
  %5333 = select <8 x i1> %5255, <8 x double> %5332, <8 x double> %5331
  store <8 x double> %5333, ptr %5318, align 64, !tbaa !26
  %5334 = add nsw i64 %5268, -1
  %5335 = icmp sgt i64 %5268, 0
  br i1 %5335, label %5264, label %5256, !llvm.loop !149

5336:                                             ; preds = %5407, %5256
  %5337 = getelementptr inbounds nuw i8, ptr %4984, i64 8760
  %5338 = load ptr, ptr %5337, align 8, !tbaa !49
  %5339 = getelementptr inbounds <8 x double>, ptr %5338, i64 %5040
  %5340 = getelementptr inbounds nuw i8, ptr %4984, i64 1408
  %5341 = load <8 x double>, ptr %5340, align 64, !tbaa !26
  %5342 = load <8 x double>, ptr %5339, align 64, !tbaa !26
  %5343 = icmp eq <8 x i64> %5035, zeroinitializer
  %5344 = select <8 x i1> %5343, <8 x double> %5342, <8 x double> %5341
  store <8 x double> %5344, ptr %5339, align 64, !tbaa !26
  %5345 = getelementptr inbounds nuw i8, ptr %4984, i64 8768
  %5346 = load ptr, ptr %5345, align 64, !tbaa !60
  %5347 = getelementptr inbounds <8 x double>, ptr %5346, i64 %5040
  %5348 = load <8 x double>, ptr %5340, align 64, !tbaa !26
  %5349 = load <8 x double>, ptr %5347, align 64, !tbaa !26
  %5350 = select <8 x i1> %5343, <8 x double> %5349, <8 x double> %5348
  store <8 x double> %5350, ptr %5347, align 64, !tbaa !26
  %5351 = getelementptr inbounds nuw i8, ptr %4984, i64 4736
  %5352 = fneg <8 x double> %5071
  %5353 = getelementptr inbounds nuw i8, ptr %4984, i64 768
  %5354 = load <8 x double>, ptr %5041, align 64, !tbaa !26
  %5355 = select <8 x i1> %5343, <8 x double> %5354, <8 x double> %5059
  store <8 x double> %5355, ptr %5041, align 64, !tbaa !26
  %5356 = getelementptr inbounds nuw i8, ptr %4984, i64 3904
  %5357 = load <8 x double>, ptr %5356, align 64, !tbaa !26
  %5358 = select <8 x i1> %5343, <8 x double> %5357, <8 x double> %5070
  store <8 x double> %5358, ptr %5356, align 64, !tbaa !26
  %5359 = getelementptr inbounds nuw i8, ptr %4984, i64 4672
  %5360 = load <8 x double>, ptr %5359, align 64, !tbaa !26
  %5361 = select <8 x i1> %5343, <8 x double> %5360, <8 x double> %5070
  store <8 x double> %5361, ptr %5359, align 64, !tbaa !26
  %5362 = getelementptr inbounds nuw i8, ptr %4984, i64 4032
  %5363 = load <8 x double>, ptr %5362, align 64, !tbaa !26
  %5364 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5352, <8 x double> %5053, <8 x double> %5363)
  %5365 = select <8 x i1> %5343, <8 x double> %5363, <8 x double> %5364
  store <8 x double> %5365, ptr %5362, align 64, !tbaa !26
  %5366 = getelementptr inbounds nuw i8, ptr %4984, i64 3968
  %5367 = load <8 x double>, ptr %5366, align 64, !tbaa !26
  %5368 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5071, <8 x double> %5053, <8 x double> %5367)
  %5369 = select <8 x i1> %5343, <8 x double> %5367, <8 x double> %5368
  store <8 x double> %5369, ptr %5366, align 64, !tbaa !26
  %5370 = getelementptr inbounds nuw i8, ptr %4984, i64 4288
  %5371 = load <8 x double>, ptr %5370, align 64, !tbaa !26
  %5372 = load <8 x double>, ptr %5353, align 64, !tbaa !26
  %5373 = fneg <8 x double> %5372
  %5374 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5373, <8 x double> %5045, <8 x double> %5115)
  %5375 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5071, <8 x double> %5374, <8 x double> %5371)
  %5376 = select <8 x i1> %5343, <8 x double> %5371, <8 x double> %5375
  store <8 x double> %5376, ptr %5370, align 64, !tbaa !26
  %5377 = load <8 x double>, ptr %5351, align 64, !tbaa !26
  %5378 = select <8 x i1> %5343, <8 x double> %5377, <8 x double> %5059
  store <8 x double> %5378, ptr %5351, align 64, !tbaa !26
  %5379 = getelementptr inbounds nuw i8, ptr %4984, i64 4800
  %5380 = load <8 x double>, ptr %5379, align 64, !tbaa !26
  %5381 = select <8 x i1> %5343, <8 x double> %5380, <8 x double> %5070
  store <8 x double> %5381, ptr %5379, align 64, !tbaa !26
  %5382 = getelementptr inbounds nuw i8, ptr %4984, i64 5568
  %5383 = load <8 x double>, ptr %5382, align 64, !tbaa !26
  %5384 = select <8 x i1> %5343, <8 x double> %5383, <8 x double> %5070
  store <8 x double> %5384, ptr %5382, align 64, !tbaa !26
  %5385 = getelementptr inbounds nuw i8, ptr %4984, i64 4928
  %5386 = load <8 x double>, ptr %5385, align 64, !tbaa !26
  %5387 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5352, <8 x double> %5053, <8 x double> %5386)
  %5388 = select <8 x i1> %5343, <8 x double> %5386, <8 x double> %5387
  store <8 x double> %5388, ptr %5385, align 64, !tbaa !26
  %5389 = getelementptr inbounds nuw i8, ptr %4984, i64 4864
  %5390 = load <8 x double>, ptr %5389, align 64, !tbaa !26
  %5391 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5071, <8 x double> %5053, <8 x double> %5390)
  %5392 = select <8 x i1> %5343, <8 x double> %5390, <8 x double> %5391
  store <8 x double> %5392, ptr %5389, align 64, !tbaa !26
  %5393 = getelementptr inbounds nuw i8, ptr %4984, i64 5184
  %5394 = load <8 x double>, ptr %5393, align 64, !tbaa !26
  %5395 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5373, <8 x double> %5045, <8 x double> %5110)
  %5396 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5071, <8 x double> %5395, <8 x double> %5394)
  %5397 = select <8 x i1> %5343, <8 x double> %5394, <8 x double> %5396
  store <8 x double> %5397, ptr %5393, align 64, !tbaa !26
  %5398 = load <8 x i64>, ptr %4998, align 64, !tbaa !26
  %5399 = or <8 x i64> %5398, %5035
  store <8 x i64> %5399, ptr %4998, align 64, !tbaa !26
  %5400 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %5401 = fmul <8 x double> %5400, splat (double 4.000000e+01)
  %5402 = fcmp olt <8 x double> %4982, %5401
  %5403 = select <8 x i1> %5402, <8 x double> %4982, <8 x double> %5401
  %5404 = icmp ne <8 x i64> %5035, zeroinitializer
  %5405 = select <8 x i1> %5025, <8 x i1> %5404, <8 x i1> zeroinitializer
  %5406 = select <8 x i1> %5405, <8 x double> %5403, <8 x double> %4982
  br label %5438

5407:                                             ; preds = %5258, %5407
  %5408 = phi i64 [ 0, %5258 ], [ %5436, %5407 ]
  %5409 = uitofp nneg i64 %5408 to double
  %5410 = insertelement <8 x double> poison, double %5409, i64 0
  %5411 = shufflevector <8 x double> %5410, <8 x double> poison, <8 x i32> zeroinitializer
  %5412 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5411, <8 x double> %5116, <8 x double> %5059)
  %5413 = load <8 x double>, ptr %5060, align 64, !tbaa !26
  %5414 = load <8 x double>, ptr %5062, align 64, !tbaa !26
  %5415 = load <8 x double>, ptr %5064, align 64, !tbaa !26
  %5416 = load <8 x double>, ptr %5066, align 64, !tbaa !26
  %5417 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5412, <8 x double> %5416, <8 x double> %5415)
  %5418 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5412, <8 x double> %5417, <8 x double> %5414)
  %5419 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5412, <8 x double> %5418, <8 x double> %5413)
  %5420 = load ptr, ptr %5259, align 8, !tbaa !49
  %5421 = getelementptr inbounds nuw <8 x double>, ptr %5420, i64 %5408
  %5422 = load <8 x double>, ptr %5421, align 64, !tbaa !26
  %5423 = select <8 x i1> %5260, <8 x double> %5422, <8 x double> %5419
  store <8 x double> %5423, ptr %5421, align 64, !tbaa !26
  %5424 = load ptr, ptr %5261, align 64, !tbaa !60
  %5425 = getelementptr inbounds nuw <8 x double>, ptr %5424, i64 %5408
  %5426 = load <8 x double>, ptr %5425, align 64, !tbaa !26
  %5427 = select <8 x i1> %5260, <8 x double> %5426, <8 x double> %5419
  store <8 x double> %5427, ptr %5425, align 64, !tbaa !26
  %5428 = load ptr, ptr %5262, align 8, !tbaa !50
  %5429 = getelementptr inbounds nuw <8 x double>, ptr %5428, i64 %5408
  %5430 = load <8 x double>, ptr %5429, align 64, !tbaa !26
  %5431 = select <8 x i1> %5260, <8 x double> %5430, <8 x double> %5045
  store <8 x double> %5431, ptr %5429, align 64, !tbaa !26
  %5432 = load ptr, ptr %5263, align 16, !tbaa !62
  %5433 = getelementptr inbounds nuw <8 x double>, ptr %5432, i64 %5408
  %5434 = load <8 x double>, ptr %5433, align 64, !tbaa !26
  %5435 = select <8 x i1> %5260, <8 x double> %5434, <8 x double> %5045
  store <8 x double> %5435, ptr %5433, align 64, !tbaa !26
  %5436 = add nuw nsw i64 %5408, 1
  %5437 = icmp eq i64 %5436, %5040
  br i1 %5437, label %5336, label %5407, !llvm.loop !150

5438:                                             ; preds = %5336, %4980
  %5439 = phi <8 x double> [ %5406, %5336 ], [ %4982, %4980 ]
  %5440 = add nuw nsw i64 %4981, 1
  %5441 = load i64, ptr %157, align 8, !tbaa !20
  %5442 = icmp slt i64 %5440, %5441
  br i1 %5442, label %4980, label %5443, !llvm.loop !151

5443:                                             ; preds = %5438
  %5444 = load <8 x double>, ptr %137, align 64, !tbaa !26
  br label %5445

5445:                                             ; preds = %5443, %4938
  %5446 = phi <8 x double> [ %4947, %4938 ], [ %5444, %5443 ]
  %5447 = phi <8 x double> [ %4970, %4938 ], [ %5439, %5443 ]
  %5448 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %5447)
  %5449 = insertelement <8 x double> poison, double %5448, i64 0
  %5450 = shufflevector <8 x double> %5449, <8 x double> poison, <8 x i32> zeroinitializer
  %5451 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %5452 = select <8 x i1> %4515, <8 x double> %5451, <8 x double> %5450
  store <8 x double> %5452, ptr %140, align 64, !tbaa !26
  %5453 = load ptr, ptr %218, align 64, !tbaa !37
  %5454 = getelementptr inbounds nuw i8, ptr %5453, i64 64
  store <8 x double> %5446, ptr %5453, align 64, !tbaa !26
  %5455 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %5456 = getelementptr inbounds nuw i8, ptr %5453, i64 128
  store <8 x double> %5455, ptr %5454, align 64, !tbaa !26
  %5457 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %5458 = getelementptr inbounds nuw i8, ptr %5453, i64 192
  store <8 x double> %5457, ptr %5456, align 64, !tbaa !26
  %5459 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %5460 = getelementptr inbounds nuw i8, ptr %5453, i64 256
  store <8 x double> %5459, ptr %5458, align 64, !tbaa !26
  %5461 = load i64, ptr %157, align 8, !tbaa !20
  %5462 = icmp sgt i64 %5461, 0
  br i1 %5462, label %5467, label %5463

5463:                                             ; preds = %5467, %5445
  %5464 = phi ptr [ %5460, %5445 ], [ %5473, %5467 ]
  %5465 = load i64, ptr %128, align 8, !tbaa !43
  %5466 = icmp eq i64 %5465, 0
  br i1 %5466, label %5602, label %5477

5467:                                             ; preds = %5445, %5467
  %5468 = phi ptr [ %5473, %5467 ], [ %5460, %5445 ]
  %5469 = phi i64 [ %5474, %5467 ], [ 0, %5445 ]
  %5470 = load ptr, ptr %130, align 8, !tbaa !28
  %5471 = getelementptr inbounds nuw %struct.Piece, ptr %5470, i64 %5469, i32 34
  %5472 = load <8 x double>, ptr %5471, align 64, !tbaa !26
  %5473 = getelementptr inbounds nuw i8, ptr %5468, i64 64
  store <8 x double> %5472, ptr %5468, align 64, !tbaa !26
  %5474 = add nuw nsw i64 %5469, 1
  %5475 = load i64, ptr %157, align 8, !tbaa !20
  %5476 = icmp slt i64 %5474, %5475
  br i1 %5476, label %5467, label %5463, !llvm.loop !152

5477:                                             ; preds = %5463
  %5478 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %5479 = getelementptr inbounds nuw i8, ptr %5464, i64 64
  store <8 x double> %5478, ptr %5464, align 64, !tbaa !26
  %5480 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %5481 = getelementptr inbounds nuw i8, ptr %5464, i64 128
  store <8 x double> %5480, ptr %5479, align 64, !tbaa !26
  %5482 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %5483 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %5484 = fsub <8 x double> %5482, %5483
  %5485 = fcmp ogt <8 x double> %5484, zeroinitializer
  %5486 = select <8 x i1> %5485, <8 x double> %5484, <8 x double> zeroinitializer
  store <8 x double> %5486, ptr %5481, align 64, !tbaa !26
  %5487 = load i64, ptr %157, align 8, !tbaa !20
  %5488 = icmp sgt i64 %5487, 0
  br i1 %5488, label %5489, label %5602

5489:                                             ; preds = %5477
  %5490 = getelementptr inbounds nuw i8, ptr %5464, i64 192
  br label %5491

5491:                                             ; preds = %5489, %5491
  %5492 = phi ptr [ %5598, %5491 ], [ %5490, %5489 ]
  %5493 = phi i64 [ %5599, %5491 ], [ 0, %5489 ]
  %5494 = load ptr, ptr %130, align 8, !tbaa !28
  %5495 = getelementptr inbounds nuw %struct.Piece, ptr %5494, i64 %5493
  %5496 = getelementptr inbounds nuw i8, ptr %5495, i64 8592
  %5497 = load ptr, ptr %5496, align 16, !tbaa !46
  %5498 = load i64, ptr %119, align 16, !tbaa !21
  %5499 = getelementptr <8 x double>, ptr %5497, i64 %5498
  %5500 = getelementptr i8, ptr %5499, i64 -64
  %5501 = load <8 x double>, ptr %5500, align 64, !tbaa !26
  %5502 = getelementptr inbounds nuw i8, ptr %5495, i64 7232
  %5503 = load <8 x double>, ptr %5502, align 64, !tbaa !26
  %5504 = getelementptr inbounds nuw i8, ptr %5495, i64 5952
  %5505 = load <8 x double>, ptr %5504, align 64, !tbaa !26
  %5506 = fsub <8 x double> %5505, %5501
  %5507 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5503, <8 x double> %5506, <8 x double> %5501)
  %5508 = getelementptr inbounds nuw i8, ptr %5492, i64 64
  store <8 x double> %5507, ptr %5492, align 64, !tbaa !26
  %5509 = getelementptr inbounds nuw i8, ptr %5495, i64 6784
  %5510 = load <8 x double>, ptr %5509, align 64, !tbaa !26
  %5511 = getelementptr inbounds nuw i8, ptr %5492, i64 128
  store <8 x double> %5510, ptr %5508, align 64, !tbaa !26
  %5512 = load <8 x double>, ptr %5495, align 64, !tbaa !26
  %5513 = getelementptr inbounds nuw i8, ptr %5495, i64 3840
  %5514 = load <8 x double>, ptr %5513, align 64, !tbaa !26
  %5515 = fsub <8 x double> %5512, %5514
  %5516 = getelementptr inbounds nuw i8, ptr %5492, i64 192
  store <8 x double> %5515, ptr %5511, align 64, !tbaa !26
  %5517 = getelementptr inbounds nuw i8, ptr %5495, i64 4160
  %5518 = load <8 x double>, ptr %5517, align 64, !tbaa !26
  %5519 = getelementptr inbounds nuw i8, ptr %5492, i64 256
  store <8 x double> %5518, ptr %5516, align 64, !tbaa !26
  %5520 = getelementptr inbounds nuw i8, ptr %5495, i64 4096
  %5521 = load <8 x double>, ptr %5520, align 64, !tbaa !26
  %5522 = getelementptr inbounds nuw i8, ptr %5492, i64 320
  store <8 x double> %5521, ptr %5519, align 64, !tbaa !26
  %5523 = getelementptr inbounds nuw i8, ptr %5495, i64 3968
  %5524 = load <8 x double>, ptr %5523, align 64, !tbaa !26
  %5525 = getelementptr inbounds nuw i8, ptr %5492, i64 384
  store <8 x double> %5524, ptr %5522, align 64, !tbaa !26
  %5526 = getelementptr inbounds nuw i8, ptr %5495, i64 4224
  %5527 = load <8 x double>, ptr %5526, align 64, !tbaa !26
  %5528 = getelementptr inbounds nuw i8, ptr %5492, i64 448
  store <8 x double> %5527, ptr %5525, align 64, !tbaa !26
  %5529 = getelementptr inbounds nuw i8, ptr %5495, i64 8712
  %5530 = load i64, ptr %120, align 8, !tbaa !22
  %5531 = sitofp i64 %5530 to double
  %5532 = tail call double @llvm.fmuladd.f64(double %5531, double 7.500000e-01, double -5.000000e-01)
  %5533 = fcmp ogt double %5532, 0.000000e+00
  %5534 = select i1 %5533, double %5532, double 0.000000e+00
  %5535 = fptosi double %5534 to i64
  %5536 = add nsw i64 %5530, -2
  %5537 = tail call i64 @llvm.smin.i64(i64 %5536, i64 %5535)
  %5538 = sitofp i64 %5537 to double
  %5539 = fsub double %5532, %5538
  %5540 = fsub double 1.000000e+00, %5539
  %5541 = insertelement <8 x double> poison, double %5540, i64 0
  %5542 = shufflevector <8 x double> %5541, <8 x double> poison, <8 x i32> zeroinitializer
  %5543 = load ptr, ptr %5529, align 8, !tbaa !50
  %5544 = getelementptr inbounds <8 x double>, ptr %5543, i64 %5537
  %5545 = load <8 x double>, ptr %5544, align 64, !tbaa !26
  %5546 = insertelement <8 x double> poison, double %5539, i64 0
  %5547 = shufflevector <8 x double> %5546, <8 x double> poison, <8 x i32> zeroinitializer
  %5548 = getelementptr i8, ptr %5544, i64 64
  %5549 = load <8 x double>, ptr %5548, align 64, !tbaa !26
  %5550 = fmul <8 x double> %5549, %5547
  %5551 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5542, <8 x double> %5545, <8 x double> %5550)
  store <8 x double> %5551, ptr %5528, align 64, !tbaa !26
  %5552 = load i64, ptr %120, align 8, !tbaa !22
  %5553 = sitofp i64 %5552 to double
  %5554 = tail call double @llvm.fmuladd.f64(double %5553, double 5.000000e-01, double -5.000000e-01)
  %5555 = fcmp ogt double %5554, 0.000000e+00
  %5556 = select i1 %5555, double %5554, double 0.000000e+00
  %5557 = fptosi double %5556 to i64
  %5558 = add nsw i64 %5552, -2
  %5559 = tail call i64 @llvm.smin.i64(i64 %5558, i64 %5557)
  %5560 = sitofp i64 %5559 to double
  %5561 = fsub double %5554, %5560
  %5562 = fsub double 1.000000e+00, %5561
  %5563 = insertelement <8 x double> poison, double %5562, i64 0
  %5564 = shufflevector <8 x double> %5563, <8 x double> poison, <8 x i32> zeroinitializer
  %5565 = load ptr, ptr %5529, align 8, !tbaa !50
  %5566 = getelementptr inbounds <8 x double>, ptr %5565, i64 %5559
  %5567 = load <8 x double>, ptr %5566, align 64, !tbaa !26
  %5568 = insertelement <8 x double> poison, double %5561, i64 0
  %5569 = shufflevector <8 x double> %5568, <8 x double> poison, <8 x i32> zeroinitializer
  %5570 = getelementptr i8, ptr %5566, i64 64
  %5571 = load <8 x double>, ptr %5570, align 64, !tbaa !26
  %5572 = fmul <8 x double> %5571, %5569
  %5573 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5564, <8 x double> %5567, <8 x double> %5572)
  %5574 = getelementptr inbounds nuw i8, ptr %5492, i64 512
  store <8 x double> %5573, ptr %5574, align 64, !tbaa !26
  %5575 = load i64, ptr %120, align 8, !tbaa !22
  %5576 = sitofp i64 %5575 to double
  %5577 = tail call double @llvm.fmuladd.f64(double %5576, double 2.500000e-01, double -5.000000e-01)
  %5578 = fcmp ogt double %5577, 0.000000e+00
  %5579 = select i1 %5578, double %5577, double 0.000000e+00
  %5580 = fptosi double %5579 to i64
  %5581 = add nsw i64 %5575, -2
  %5582 = tail call i64 @llvm.smin.i64(i64 %5581, i64 %5580)
  %5583 = sitofp i64 %5582 to double
  %5584 = fsub double %5577, %5583
  %5585 = fsub double 1.000000e+00, %5584
  %5586 = insertelement <8 x double> poison, double %5585, i64 0
  %5587 = shufflevector <8 x double> %5586, <8 x double> poison, <8 x i32> zeroinitializer
  %5588 = load ptr, ptr %5529, align 8, !tbaa !50
  %5589 = getelementptr inbounds <8 x double>, ptr %5588, i64 %5582
  %5590 = load <8 x double>, ptr %5589, align 64, !tbaa !26
  %5591 = insertelement <8 x double> poison, double %5584, i64 0
  %5592 = shufflevector <8 x double> %5591, <8 x double> poison, <8 x i32> zeroinitializer
  %5593 = getelementptr i8, ptr %5589, i64 64
  %5594 = load <8 x double>, ptr %5593, align 64, !tbaa !26
  %5595 = fmul <8 x double> %5594, %5592
  %5596 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5587, <8 x double> %5590, <8 x double> %5595)
  %5597 = getelementptr inbounds nuw i8, ptr %5492, i64 576
  store <8 x double> %5596, ptr %5597, align 64, !tbaa !26
  %5598 = getelementptr inbounds nuw i8, ptr %5492, i64 640
  %5599 = add nuw nsw i64 %5493, 1
  %5600 = load i64, ptr %157, align 8, !tbaa !20
  %5601 = icmp slt i64 %5599, %5600
  br i1 %5601, label %5491, label %5602, !llvm.loop !153

5602:                                             ; preds = %5491, %5477, %5463
  %5603 = getelementptr inbounds nuw i8, ptr %5464, i64 192
  %5604 = extractelement <8 x i64> %4455, i64 0
  %5605 = icmp eq i64 %5604, 0
  br i1 %5605, label %5745, label %5606

5606:                                             ; preds = %5602
  %5607 = load i64, ptr %220, align 8, !tbaa !30
  %5608 = load i64, ptr %221, align 8, !tbaa !154
  %5609 = icmp eq i64 %5607, %5608
  br i1 %5609, label %5612, label %5610

5610:                                             ; preds = %5606
  %5611 = load ptr, ptr %225, align 8, !tbaa !155
  br label %5625

5612:                                             ; preds = %5606
  %5613 = load i64, ptr %121, align 8, !tbaa !30
  %5614 = load ptr, ptr %222, align 8, !tbaa !156
  %5615 = load i64, ptr %112, align 8, !tbaa !40
  %5616 = getelementptr inbounds i64, ptr %5614, i64 %5615
  store i64 %5613, ptr %5616, align 8, !tbaa !30
  %5617 = load ptr, ptr %223, align 8, !tbaa !157
  %5618 = load i64, ptr %112, align 8, !tbaa !40
  %5619 = add nsw i64 %5618, 1
  store i64 %5619, ptr %112, align 8, !tbaa !40
  %5620 = load i64, ptr %221, align 8, !tbaa !154
  %5621 = mul nsw i64 %5620, %5618
  %5622 = load i64, ptr %224, align 8, !tbaa !14
  %5623 = mul nsw i64 %5621, %5622
  %5624 = getelementptr inbounds double, ptr %5617, i64 %5623
  store ptr %5624, ptr %225, align 8, !tbaa !155
  br label %5625

5625:                                             ; preds = %5610, %5612
  %5626 = phi i64 [ %5607, %5610 ], [ 0, %5612 ]
  %5627 = phi ptr [ %5611, %5610 ], [ %5624, %5612 ]
  %5628 = add nsw i64 %5626, 1
  store i64 %5628, ptr %220, align 8, !tbaa !30
  %5629 = load i64, ptr %224, align 8, !tbaa !14
  %5630 = mul nsw i64 %5629, %5626
  %5631 = getelementptr inbounds double, ptr %5627, i64 %5630
  %5632 = load ptr, ptr %218, align 64, !tbaa !37
  %5633 = icmp ult ptr %5632, %5460
  br i1 %5633, label %5692, label %5634

5634:                                             ; preds = %5692, %5625
  %5635 = phi ptr [ %5631, %5625 ], [ %5696, %5692 ]
  %5636 = load i64, ptr %129, align 64, !tbaa !16
  %5637 = icmp sgt i64 %5636, 0
  br i1 %5637, label %5638, label %5680

5638:                                             ; preds = %5634
  %5639 = and i64 %5636, 3
  %5640 = icmp ult i64 %5636, 4
  br i1 %5640, label %5665, label %5641

5641:                                             ; preds = %5638
  %5642 = and i64 %5636, 9223372036854775804
  br label %5643

5643:                                             ; preds = %5643, %5641
  %5644 = phi i64 [ 0, %5641 ], [ %5662, %5643 ]
  %5645 = phi ptr [ %5635, %5641 ], [ %5659, %5643 ]
  %5646 = phi i64 [ 0, %5641 ], [ %5663, %5643 ]
  %5647 = getelementptr i8, ptr %5645, i64 8
  %5648 = load <8 x double>, ptr %5460, align 64, !tbaa !26
  %5649 = extractelement <8 x double> %5648, i64 %5644
  store double %5649, ptr %5645, align 8, !tbaa !41
  %5650 = or disjoint i64 %5644, 1
  %5651 = getelementptr i8, ptr %5645, i64 16
  %5652 = load <8 x double>, ptr %5460, align 64, !tbaa !26
  %5653 = extractelement <8 x double> %5652, i64 %5650
  store double %5653, ptr %5647, align 8, !tbaa !41
  %5654 = or disjoint i64 %5644, 2
  %5655 = getelementptr i8, ptr %5645, i64 24
  %5656 = load <8 x double>, ptr %5460, align 64, !tbaa !26
  %5657 = extractelement <8 x double> %5656, i64 %5654
  store double %5657, ptr %5651, align 8, !tbaa !41
  %5658 = or disjoint i64 %5644, 3
  %5659 = getelementptr i8, ptr %5645, i64 32
  %5660 = load <8 x double>, ptr %5460, align 64, !tbaa !26
  %5661 = extractelement <8 x double> %5660, i64 %5658
  store double %5661, ptr %5655, align 8, !tbaa !41
  %5662 = add nuw nsw i64 %5644, 4
  %5663 = add i64 %5646, 4
  %5664 = icmp eq i64 %5663, %5642
  br i1 %5664, label %5665, label %5643, !llvm.loop !158

5665:                                             ; preds = %5643, %5638
  %5666 = phi ptr [ poison, %5638 ], [ %5659, %5643 ]
  %5667 = phi i64 [ 0, %5638 ], [ %5662, %5643 ]
  %5668 = phi ptr [ %5635, %5638 ], [ %5659, %5643 ]
  %5669 = icmp eq i64 %5639, 0
  br i1 %5669, label %5680, label %5670

5670:                                             ; preds = %5665, %5670
  %5671 = phi i64 [ %5677, %5670 ], [ %5667, %5665 ]
  %5672 = phi ptr [ %5674, %5670 ], [ %5668, %5665 ]
  %5673 = phi i64 [ %5678, %5670 ], [ 0, %5665 ]
  %5674 = getelementptr i8, ptr %5672, i64 8
  %5675 = load <8 x double>, ptr %5460, align 64, !tbaa !26
  %5676 = extractelement <8 x double> %5675, i64 %5671
  store double %5676, ptr %5672, align 8, !tbaa !41
  %5677 = add nuw nsw i64 %5671, 1
  %5678 = add i64 %5673, 1
  %5679 = icmp eq i64 %5678, %5639
  br i1 %5679, label %5680, label %5670, !llvm.loop !159

5680:                                             ; preds = %5665, %5670, %5634
  %5681 = phi ptr [ %5635, %5634 ], [ %5666, %5665 ], [ %5674, %5670 ]
  %5682 = load i64, ptr %128, align 8, !tbaa !43
  %5683 = icmp eq i64 %5682, 0
  br i1 %5683, label %5745, label %5684

5684:                                             ; preds = %5680
  %5685 = load double, ptr %5464, align 8, !tbaa !41
  %5686 = getelementptr inbounds nuw i8, ptr %5681, i64 8
  store double %5685, ptr %5681, align 8, !tbaa !41
  %5687 = getelementptr inbounds nuw i8, ptr %5464, i64 64
  %5688 = load double, ptr %5687, align 8, !tbaa !41
  %5689 = getelementptr inbounds nuw i8, ptr %5681, i64 16
  store double %5688, ptr %5686, align 8, !tbaa !41
  %5690 = getelementptr inbounds nuw i8, ptr %5464, i64 128
  %5691 = load double, ptr %5690, align 8, !tbaa !41
  store double %5691, ptr %5689, align 8, !tbaa !41
  br i1 %5637, label %5699, label %5745

5692:                                             ; preds = %5625, %5692
  %5693 = phi ptr [ %5697, %5692 ], [ %5632, %5625 ]
  %5694 = phi ptr [ %5696, %5692 ], [ %5631, %5625 ]
  %5695 = load double, ptr %5693, align 8, !tbaa !41
  %5696 = getelementptr inbounds nuw i8, ptr %5694, i64 8
  store double %5695, ptr %5694, align 8, !tbaa !41
  %5697 = getelementptr inbounds nuw i8, ptr %5693, i64 64
  %5698 = icmp ult ptr %5697, %5460
  br i1 %5698, label %5692, label %5634, !llvm.loop !161

5699:                                             ; preds = %5684
  %5700 = getelementptr inbounds nuw i8, ptr %5681, i64 24
  %5701 = getelementptr inbounds nuw i8, ptr %5464, i64 256
  %5702 = getelementptr inbounds nuw i8, ptr %5464, i64 320
  %5703 = getelementptr inbounds nuw i8, ptr %5464, i64 384
  %5704 = getelementptr inbounds nuw i8, ptr %5464, i64 448
  %5705 = getelementptr inbounds nuw i8, ptr %5464, i64 512
  %5706 = getelementptr inbounds nuw i8, ptr %5464, i64 576
  %5707 = getelementptr inbounds nuw i8, ptr %5464, i64 640
  %5708 = getelementptr inbounds nuw i8, ptr %5464, i64 704
  %5709 = getelementptr inbounds nuw i8, ptr %5464, i64 768
  br label %5710

5710:                                             ; preds = %5699, %5710
  %5711 = phi i64 [ %5743, %5710 ], [ 0, %5699 ]
  %5712 = phi ptr [ %5742, %5710 ], [ %5700, %5699 ]
  %5713 = load <8 x double>, ptr %5603, align 64, !tbaa !26
  %5714 = extractelement <8 x double> %5713, i64 %5711
  %5715 = getelementptr inbounds nuw i8, ptr %5712, i64 8
  store double %5714, ptr %5712, align 8, !tbaa !41
  %5716 = load <8 x double>, ptr %5701, align 64, !tbaa !26
  %5717 = extractelement <8 x double> %5716, i64 %5711
  %5718 = getelementptr inbounds nuw i8, ptr %5712, i64 16
  store double %5717, ptr %5715, align 8, !tbaa !41
  %5719 = load <8 x double>, ptr %5702, align 64, !tbaa !26
  %5720 = extractelement <8 x double> %5719, i64 %5711
  %5721 = getelementptr inbounds nuw i8, ptr %5712, i64 24
  store double %5720, ptr %5718, align 8, !tbaa !41
  %5722 = load <8 x double>, ptr %5703, align 64, !tbaa !26
  %5723 = extractelement <8 x double> %5722, i64 %5711
  %5724 = getelementptr inbounds nuw i8, ptr %5712, i64 32
  store double %5723, ptr %5721, align 8, !tbaa !41
  %5725 = load <8 x double>, ptr %5704, align 64, !tbaa !26
  %5726 = extractelement <8 x double> %5725, i64 %5711
  %5727 = getelementptr inbounds nuw i8, ptr %5712, i64 40
  store double %5726, ptr %5724, align 8, !tbaa !41
  %5728 = load <8 x double>, ptr %5705, align 64, !tbaa !26
  %5729 = extractelement <8 x double> %5728, i64 %5711
  %5730 = getelementptr inbounds nuw i8, ptr %5712, i64 48
  store double %5729, ptr %5727, align 8, !tbaa !41
  %5731 = load <8 x double>, ptr %5706, align 64, !tbaa !26
  %5732 = extractelement <8 x double> %5731, i64 %5711
  %5733 = getelementptr inbounds nuw i8, ptr %5712, i64 56
  store double %5732, ptr %5730, align 8, !tbaa !41
  %5734 = load <8 x double>, ptr %5707, align 64, !tbaa !26
  %5735 = extractelement <8 x double> %5734, i64 %5711
  %5736 = getelementptr inbounds nuw i8, ptr %5712, i64 64
  store double %5735, ptr %5733, align 8, !tbaa !41
  %5737 = load <8 x double>, ptr %5708, align 64, !tbaa !26
  %5738 = extractelement <8 x double> %5737, i64 %5711
  %5739 = getelementptr inbounds nuw i8, ptr %5712, i64 72
  store double %5738, ptr %5736, align 8, !tbaa !41
  %5740 = load <8 x double>, ptr %5709, align 64, !tbaa !26
  %5741 = extractelement <8 x double> %5740, i64 %5711
  %5742 = getelementptr inbounds nuw i8, ptr %5712, i64 80
  store double %5741, ptr %5739, align 8, !tbaa !41
  %5743 = add nuw nsw i64 %5711, 1
  %5744 = icmp eq i64 %5743, %5636
  br i1 %5744, label %5745, label %5710, !llvm.loop !158

5745:                                             ; preds = %5710, %5684, %5680, %5602
  %5746 = load <8 x double>, ptr %137, align 64, !tbaa !26
  %5747 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %5748 = fsub <8 x double> %5746, %5747
  %5749 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %5750 = fadd <8 x double> %5749, splat (double -1.000000e-09)
  %5751 = fcmp oge <8 x double> %5748, %5750
  %5752 = select <8 x i1> %5751, <8 x i64> %4455, <8 x i64> zeroinitializer
  %5753 = load i64, ptr %157, align 8, !tbaa !20
  %5754 = icmp sgt i64 %5753, 0
  br i1 %5754, label %5755, label %5787

5755:                                             ; preds = %5745
  %5756 = load ptr, ptr %130, align 8, !tbaa !28
  %5757 = and i64 %5753, 1
  %5758 = icmp eq i64 %5753, 1
  br i1 %5758, label %5777, label %5759

5759:                                             ; preds = %5755
  %5760 = and i64 %5753, 9223372036854775806
  br label %5761

5761:                                             ; preds = %5761, %5759
  %5762 = phi i64 [ 0, %5759 ], [ %5774, %5761 ]
  %5763 = phi <8 x double> [ splat (double 1.000000e+09), %5759 ], [ %5773, %5761 ]
  %5764 = phi i64 [ 0, %5759 ], [ %5775, %5761 ]
  %5765 = getelementptr inbounds nuw %struct.Piece, ptr %5756, i64 %5762, i32 34
  %5766 = load <8 x double>, ptr %5765, align 64, !tbaa !26
  %5767 = fcmp olt <8 x double> %5763, %5766
  %5768 = select <8 x i1> %5767, <8 x double> %5763, <8 x double> %5766
  %5769 = or disjoint i64 %5762, 1
  %5770 = getelementptr inbounds nuw %struct.Piece, ptr %5756, i64 %5769, i32 34
  %5771 = load <8 x double>, ptr %5770, align 64, !tbaa !26
  %5772 = fcmp olt <8 x double> %5768, %5771
  %5773 = select <8 x i1> %5772, <8 x double> %5768, <8 x double> %5771
  %5774 = add nuw nsw i64 %5762, 2
  %5775 = add i64 %5764, 2
  %5776 = icmp eq i64 %5775, %5760
  br i1 %5776, label %5777, label %5761, !llvm.loop !138

5777:                                             ; preds = %5761, %5755
  %5778 = phi <8 x double> [ poison, %5755 ], [ %5773, %5761 ]
  %5779 = phi i64 [ 0, %5755 ], [ %5774, %5761 ]
  %5780 = phi <8 x double> [ splat (double 1.000000e+09), %5755 ], [ %5773, %5761 ]
  %5781 = icmp eq i64 %5757, 0
  br i1 %5781, label %5787, label %5782

5782:                                             ; preds = %5777
  %5783 = getelementptr inbounds nuw %struct.Piece, ptr %5756, i64 %5779, i32 34
  %5784 = load <8 x double>, ptr %5783, align 64, !tbaa !26
  %5785 = fcmp olt <8 x double> %5780, %5784
  %5786 = select <8 x i1> %5785, <8 x double> %5780, <8 x double> %5784
  br label %5787

5787:                                             ; preds = %5782, %5777, %5745
  %5788 = phi <8 x double> [ splat (double 1.000000e+09), %5745 ], [ %5778, %5777 ], [ %5786, %5782 ]
  %5789 = tail call double @llvm.vector.reduce.fmin.v8f64(<8 x double> %5788)
  %5790 = insertelement <8 x double> poison, double %5789, i64 0
  %5791 = shufflevector <8 x double> %5790, <8 x double> poison, <8 x i32> zeroinitializer
  %5792 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %5793 = select <8 x i1> %4515, <8 x double> %5792, <8 x double> %5791
  store <8 x double> %5793, ptr %214, align 64, !tbaa !26
  %5794 = load <8 x double>, ptr %215, align 64, !tbaa !26
  %5795 = fcmp une <8 x double> %5794, zeroinitializer
  %5796 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %5797 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %5798 = fsub <8 x double> %5796, %5797
  %5799 = fcmp une <8 x double> %5794, splat (double 1.000000e+00)
  %5800 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %5801 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %5802 = fsub <8 x double> %5800, %5801
  %5803 = select <8 x i1> %5799, <8 x double> splat (double -1.000000e+00), <8 x double> %5802
  %5804 = fcmp une <8 x double> %5794, splat (double 2.000000e+00)
  %5805 = fsub <8 x double> %5793, %5801
  %5806 = select <8 x i1> %5804, <8 x double> %5803, <8 x double> %5805
  %5807 = fcmp une <8 x double> %5794, splat (double 3.000000e+00)
  %5808 = fsub <8 x double> %5798, %5801
  %5809 = select <8 x i1> %5807, <8 x double> %5806, <8 x double> %5808
  %5810 = fcmp une <8 x double> %5794, splat (double 4.000000e+00)
  %5811 = fsub <8 x double> %5801, %5798
  %5812 = select <8 x i1> %5810, <8 x double> %5809, <8 x double> %5811
  %5813 = fcmp oge <8 x double> %5812, splat (double 0xBEB0C6F7A0B5ED8D)
  %5814 = select <8 x i1> %5813, <8 x i1> %5795, <8 x i1> zeroinitializer
  %5815 = select <8 x i1> %5814, <8 x i64> %4455, <8 x i64> zeroinitializer
  %5816 = xor <8 x i64> %5815, splat (i64 -1)
  %5817 = and <8 x i64> %5752, %5816
  %5818 = load <8 x double>, ptr %126, align 64, !tbaa !26
  %5819 = icmp ne <8 x i64> %5817, zeroinitializer
  %5820 = select <8 x i1> %5795, <8 x i1> %5819, <8 x i1> zeroinitializer
  %5821 = select <8 x i1> %5820, <8 x double> splat (double 2.000000e+00), <8 x double> %5818
  store <8 x double> %5821, ptr %126, align 64, !tbaa !26
  %5822 = or <8 x i64> %5815, %5752
  %5823 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %5824 = fadd <8 x double> %5823, splat (double 1.000000e+00)
  %5825 = icmp eq <8 x i64> %5822, zeroinitializer
  %5826 = select <8 x i1> %5825, <8 x double> %5823, <8 x double> %5824
  store <8 x double> %5826, ptr %219, align 64, !tbaa !26
  %5827 = xor <8 x i64> %5822, %4455
  %5828 = load <8 x double>, ptr %155, align 64, !tbaa !26
  %5829 = fcmp oeq <8 x double> %5828, zeroinitializer
  %5830 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %5831 = fcmp oeq <8 x double> %5830, zeroinitializer
  %5832 = select <8 x i1> %5831, <8 x i1> %5829, <8 x i1> zeroinitializer
  %5833 = select <8 x i1> %5832, <8 x i64> %5827, <8 x i64> zeroinitializer
  %5834 = load <8 x double>, ptr %142, align 64, !tbaa !26
  %5835 = fmul <8 x double> %5834, splat (double 5.000000e-01)
  %5836 = load <8 x double>, ptr %143, align 64, !tbaa !26
  %5837 = fadd <8 x double> %5836, %5835
  %5838 = fadd <8 x double> %5837, splat (double -4.000000e-03)
  %5839 = fcmp ult <8 x double> %5800, %5838
  %5840 = fsub <8 x double> %5836, %5835
  %5841 = fadd <8 x double> %5840, splat (double 4.000000e-03)
  %5842 = fcmp ole <8 x double> %5800, %5841
  %5843 = load <8 x i64>, ptr %144, align 64, !tbaa !26
  %5844 = select <8 x i1> %5842, <8 x i64> splat (i64 -1), <8 x i64> %5843
  %5845 = select <8 x i1> %5839, <8 x i64> %5844, <8 x i64> zeroinitializer
  %5846 = xor <8 x i64> %5845, %5843
  %5847 = and <8 x i64> %5846, %5833
  %5848 = and <8 x i64> %5845, %5833
  %5849 = xor <8 x i64> %5833, splat (i64 -1)
  %5850 = and <8 x i64> %5843, %5849
  %5851 = or <8 x i64> %5848, %5850
  store <8 x i64> %5851, ptr %144, align 64, !tbaa !26
  %5852 = load <8 x i64>, ptr %154, align 64, !tbaa !26
  %5853 = or <8 x i64> %5847, %5852
  store <8 x i64> %5853, ptr %154, align 64, !tbaa !26
  %5854 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5822)
  %5855 = icmp eq i64 %5854, 0
  br i1 %5855, label %5890, label %5856

5856:                                             ; preds = %5787
  %5857 = extractelement <8 x i64> %5822, i64 0
  %5858 = icmp eq i64 %5857, 0
  br i1 %5858, label %5860, label %5859

5859:                                             ; preds = %5856
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #6
  br label %5860

5860:                                             ; preds = %5859, %5856
  %5861 = extractelement <8 x i64> %5822, i64 1
  %5862 = icmp eq i64 %5861, 0
  br i1 %5862, label %5864, label %5863

5863:                                             ; preds = %5860
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #6
  br label %5864

5864:                                             ; preds = %5863, %5860
  %5865 = extractelement <8 x i64> %5822, i64 2
  %5866 = icmp eq i64 %5865, 0
  br i1 %5866, label %5868, label %5867

5867:                                             ; preds = %5864
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 2) #6
  br label %5868

5868:                                             ; preds = %5867, %5864
  %5869 = extractelement <8 x i64> %5822, i64 3
  %5870 = icmp eq i64 %5869, 0
  br i1 %5870, label %5872, label %5871

5871:                                             ; preds = %5868
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 3) #6
  br label %5872

5872:                                             ; preds = %5871, %5868
  %5873 = extractelement <8 x i64> %5822, i64 4
  %5874 = icmp eq i64 %5873, 0
  br i1 %5874, label %5876, label %5875

5875:                                             ; preds = %5872
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 4) #6
  br label %5876

5876:                                             ; preds = %5875, %5872
  %5877 = extractelement <8 x i64> %5822, i64 5
  %5878 = icmp eq i64 %5877, 0
  br i1 %5878, label %5880, label %5879

5879:                                             ; preds = %5876
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 5) #6
  br label %5880

5880:                                             ; preds = %5879, %5876
  %5881 = extractelement <8 x i64> %5822, i64 6
  %5882 = icmp eq i64 %5881, 0
  br i1 %5882, label %5884, label %5883

5883:                                             ; preds = %5880
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 6) #6
  br label %5884

5884:                                             ; preds = %5883, %5880
  %5885 = extractelement <8 x i64> %5822, i64 7
  %5886 = icmp eq i64 %5885, 0
  br i1 %5886, label %5888, label %5887

5887:                                             ; preds = %5884
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 7) #6
  br label %5888

5888:                                             ; preds = %5887, %5884
  %5889 = load <8 x double>, ptr %126, align 64, !tbaa !26
  br label %5890

5890:                                             ; preds = %5888, %5787
  %5891 = phi <8 x double> [ %5889, %5888 ], [ %5821, %5787 ]
  %5892 = load <8 x double>, ptr %123, align 64, !tbaa !26
  %5893 = load <8 x double>, ptr %226, align 64, !tbaa !26
  %5894 = fadd <8 x double> %5893, splat (double -1.000000e+00)
  %5895 = fcmp oge <8 x double> %5892, %5894
  %5896 = select <8 x i1> %5895, <8 x i64> %4455, <8 x i64> zeroinitializer
  %5897 = icmp eq <8 x i64> %5896, zeroinitializer
  %5898 = select <8 x i1> %5897, <8 x double> %5891, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5898, ptr %126, align 64, !tbaa !26
  %5899 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5896)
  %5900 = icmp eq i64 %5899, 0
  br i1 %5900, label %519, label %5901

5901:                                             ; preds = %5890
  %5902 = extractelement <8 x i64> %5896, i64 0
  %5903 = icmp eq i64 %5902, 0
  br i1 %5903, label %5905, label %5904

5904:                                             ; preds = %5901
  store double 1.000000e+00, ptr %118, align 8, !tbaa !41
  br label %5905

5905:                                             ; preds = %5904, %5901
  %5906 = extractelement <8 x i64> %5896, i64 1
  %5907 = icmp eq i64 %5906, 0
  br i1 %5907, label %5909, label %5908

5908:                                             ; preds = %5905
  store double 1.000000e+00, ptr %270, align 8, !tbaa !41
  br label %5909

5909:                                             ; preds = %5908, %5905
  %5910 = extractelement <8 x i64> %5896, i64 2
  %5911 = icmp eq i64 %5910, 0
  br i1 %5911, label %5913, label %5912

5912:                                             ; preds = %5909
  store double 1.000000e+00, ptr %271, align 8, !tbaa !41
  br label %5913

5913:                                             ; preds = %5912, %5909
  %5914 = extractelement <8 x i64> %5896, i64 3
  %5915 = icmp eq i64 %5914, 0
  br i1 %5915, label %5917, label %5916

5916:                                             ; preds = %5913
  store double 1.000000e+00, ptr %272, align 8, !tbaa !41
  br label %5917

5917:                                             ; preds = %5916, %5913
  %5918 = extractelement <8 x i64> %5896, i64 4
  %5919 = icmp eq i64 %5918, 0
  br i1 %5919, label %5921, label %5920

5920:                                             ; preds = %5917
  store double 1.000000e+00, ptr %273, align 8, !tbaa !41
  br label %5921

5921:                                             ; preds = %5920, %5917
  %5922 = extractelement <8 x i64> %5896, i64 5
  %5923 = icmp eq i64 %5922, 0
  br i1 %5923, label %5925, label %5924

5924:                                             ; preds = %5921
  store double 1.000000e+00, ptr %274, align 8, !tbaa !41
  br label %5925

5925:                                             ; preds = %5924, %5921
  %5926 = extractelement <8 x i64> %5896, i64 6
  %5927 = icmp eq i64 %5926, 0
  br i1 %5927, label %5929, label %5928

5928:                                             ; preds = %5925
  store double 1.000000e+00, ptr %275, align 8, !tbaa !41
  br label %5929

5929:                                             ; preds = %5928, %5925
  %5930 = extractelement <8 x i64> %5896, i64 7
  %5931 = icmp eq i64 %5930, 0
  br i1 %5931, label %519, label %5932

5932:                                             ; preds = %5929
  store double 1.000000e+00, ptr %276, align 8, !tbaa !41
  br label %519

5933:                                             ; preds = %519, %524, %109
  %5934 = phi i64 [ 0, %109 ], [ 1, %524 ], [ 0, %519 ]
  ret i64 %5934
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %7 = zext nneg i32 %2 to i64
  %8 = load ptr, ptr %5, align 8, !tbaa !162
  %9 = load i64, ptr %6, align 8, !tbaa !27
  %10 = getelementptr inbounds i64, ptr %8, i64 %9
  %11 = load i64, ptr %10, align 8, !tbaa !30
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2, i64 noundef %11) #6
  %12 = getelementptr inbounds nuw i64, ptr %4, i64 %7
  store i64 -1, ptr %12, align 8, !tbaa !30
  %13 = add nuw nsw i64 %7, 1
  %14 = load ptr, ptr %5, align 8, !tbaa !162
  %15 = load i64, ptr %6, align 8, !tbaa !27
  %16 = getelementptr inbounds i64, ptr %14, i64 %15
  %17 = load i64, ptr %16, align 8, !tbaa !30
  %18 = trunc nuw nsw i64 %13 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %18, i64 noundef %17) #6
  %19 = getelementptr inbounds nuw i64, ptr %4, i64 %13
  store i64 -1, ptr %19, align 8, !tbaa !30
  %20 = add nuw nsw i64 %7, 2
  %21 = load ptr, ptr %5, align 8, !tbaa !162
  %22 = load i64, ptr %6, align 8, !tbaa !27
  %23 = getelementptr inbounds i64, ptr %21, i64 %22
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = trunc nuw nsw i64 %20 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %25, i64 noundef %24) #6
  %26 = getelementptr inbounds nuw i64, ptr %4, i64 %20
  store i64 -1, ptr %26, align 8, !tbaa !30
  %27 = add nuw nsw i64 %7, 3
  %28 = load ptr, ptr %5, align 8, !tbaa !162
  %29 = load i64, ptr %6, align 8, !tbaa !27
  %30 = getelementptr inbounds i64, ptr %28, i64 %29
  %31 = load i64, ptr %30, align 8, !tbaa !30
  %32 = trunc nuw nsw i64 %27 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %32, i64 noundef %31) #6
  %33 = getelementptr inbounds nuw i64, ptr %4, i64 %27
  store i64 -1, ptr %33, align 8, !tbaa !30
  %34 = add nuw nsw i64 %7, 4
  %35 = load ptr, ptr %5, align 8, !tbaa !162
  %36 = load i64, ptr %6, align 8, !tbaa !27
  %37 = getelementptr inbounds i64, ptr %35, i64 %36
  %38 = load i64, ptr %37, align 8, !tbaa !30
  %39 = trunc nuw nsw i64 %34 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %39, i64 noundef %38) #6
  %40 = getelementptr inbounds nuw i64, ptr %4, i64 %34
  store i64 -1, ptr %40, align 8, !tbaa !30
  %41 = add nuw nsw i64 %7, 5
  %42 = load ptr, ptr %5, align 8, !tbaa !162
  %43 = load i64, ptr %6, align 8, !tbaa !27
  %44 = getelementptr inbounds i64, ptr %42, i64 %43
  %45 = load i64, ptr %44, align 8, !tbaa !30
  %46 = trunc nuw nsw i64 %41 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %46, i64 noundef %45) #6
  %47 = getelementptr inbounds nuw i64, ptr %4, i64 %41
  store i64 -1, ptr %47, align 8, !tbaa !30
  %48 = add nuw nsw i64 %7, 6
  %49 = load ptr, ptr %5, align 8, !tbaa !162
  %50 = load i64, ptr %6, align 8, !tbaa !27
  %51 = getelementptr inbounds i64, ptr %49, i64 %50
  %52 = load i64, ptr %51, align 8, !tbaa !30
  %53 = trunc nuw nsw i64 %48 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %53, i64 noundef %52) #6
  %54 = getelementptr inbounds nuw i64, ptr %4, i64 %48
  store i64 -1, ptr %54, align 8, !tbaa !30
  %55 = add nuw nsw i64 %7, 7
  %56 = load ptr, ptr %5, align 8, !tbaa !162
  %57 = load i64, ptr %6, align 8, !tbaa !27
  %58 = getelementptr inbounds i64, ptr %56, i64 %57
  %59 = load i64, ptr %58, align 8, !tbaa !30
  %60 = trunc nuw nsw i64 %55 to i32
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %60, i64 noundef %59) #6
  %61 = getelementptr inbounds nuw i64, ptr %4, i64 %55
  store i64 -1, ptr %61, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2) #6
  %62 = add nuw nsw i32 %2, 1
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %62) #6
  %63 = add nuw nsw i32 %2, 2
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %63) #6
  %64 = add nuw nsw i32 %2, 3
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %64) #6
  %65 = add nuw nsw i32 %2, 4
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %65) #6
  %66 = add nuw nsw i32 %2, 5
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %66) #6
  %67 = add nuw nsw i32 %2, 6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %67) #6
  %68 = add nuw nsw i32 %2, 7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %68) #6
  %69 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %70 = load i64, ptr %69, align 8, !tbaa !27
  %71 = add nsw i64 %70, 1
  store i64 %71, ptr %69, align 8, !tbaa !27
  %72 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %73 = getelementptr inbounds nuw i8, ptr %0, i64 6208
  %74 = load ptr, ptr %73, align 64, !tbaa !37
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
  %91 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  br label %97

92:                                               ; preds = %97, %3
  %93 = phi ptr [ %86, %3 ], [ %103, %97 ]
  %94 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %95 = load i64, ptr %94, align 8, !tbaa !43
  %96 = icmp eq i64 %95, 0
  br i1 %96, label %238, label %107

97:                                               ; preds = %90, %97
  %98 = phi ptr [ %86, %90 ], [ %103, %97 ]
  %99 = phi i64 [ 0, %90 ], [ %104, %97 ]
  %100 = load ptr, ptr %91, align 8, !tbaa !28
  %101 = getelementptr inbounds nuw %struct.Piece, ptr %100, i64 %99, i32 34
  %102 = load <8 x double>, ptr %101, align 64, !tbaa !26
  %103 = getelementptr inbounds nuw i8, ptr %98, i64 64
  store <8 x double> %102, ptr %98, align 64, !tbaa !26
  %104 = add nuw nsw i64 %99, 1
  %105 = load i64, ptr %87, align 8, !tbaa !20
  %106 = icmp slt i64 %104, %105
  br i1 %106, label %97, label %92, !llvm.loop !152

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
  br i1 %121, label %122, label %238

122:                                              ; preds = %107
  %123 = getelementptr inbounds nuw i8, ptr %93, i64 192
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  br label %127

127:                                              ; preds = %122, %127
  %128 = phi ptr [ %123, %122 ], [ %234, %127 ]
  %129 = phi i64 [ 0, %122 ], [ %235, %127 ]
  %130 = load ptr, ptr %124, align 8, !tbaa !28
  %131 = getelementptr inbounds nuw %struct.Piece, ptr %130, i64 %129
  %132 = getelementptr inbounds nuw i8, ptr %131, i64 8592
  %133 = load ptr, ptr %132, align 16, !tbaa !46
  %134 = load i64, ptr %125, align 16, !tbaa !21
  %135 = getelementptr <8 x double>, ptr %133, i64 %134
  %136 = getelementptr i8, ptr %135, i64 -64
  %137 = load <8 x double>, ptr %136, align 64, !tbaa !26
  %138 = getelementptr inbounds nuw i8, ptr %131, i64 7232
  %139 = load <8 x double>, ptr %138, align 64, !tbaa !26
  %140 = getelementptr inbounds nuw i8, ptr %131, i64 5952
  %141 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %142 = fsub <8 x double> %141, %137
  %143 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %139, <8 x double> %142, <8 x double> %137)
  %144 = getelementptr inbounds nuw i8, ptr %128, i64 64
  store <8 x double> %143, ptr %128, align 64, !tbaa !26
  %145 = getelementptr inbounds nuw i8, ptr %131, i64 6784
  %146 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %147 = getelementptr inbounds nuw i8, ptr %128, i64 128
  store <8 x double> %146, ptr %144, align 64, !tbaa !26
  %148 = load <8 x double>, ptr %131, align 64, !tbaa !26
  %149 = getelementptr inbounds nuw i8, ptr %131, i64 3840
  %150 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %151 = fsub <8 x double> %148, %150
  %152 = getelementptr inbounds nuw i8, ptr %128, i64 192
  store <8 x double> %151, ptr %147, align 64, !tbaa !26
  %153 = getelementptr inbounds nuw i8, ptr %131, i64 4160
  %154 = load <8 x double>, ptr %153, align 64, !tbaa !26
  %155 = getelementptr inbounds nuw i8, ptr %128, i64 256
  store <8 x double> %154, ptr %152, align 64, !tbaa !26
  %156 = getelementptr inbounds nuw i8, ptr %131, i64 4096
  %157 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %158 = getelementptr inbounds nuw i8, ptr %128, i64 320
  store <8 x double> %157, ptr %155, align 64, !tbaa !26
  %159 = getelementptr inbounds nuw i8, ptr %131, i64 3968
  %160 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %161 = getelementptr inbounds nuw i8, ptr %128, i64 384
  store <8 x double> %160, ptr %158, align 64, !tbaa !26
  %162 = getelementptr inbounds nuw i8, ptr %131, i64 4224
  %163 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %164 = getelementptr inbounds nuw i8, ptr %128, i64 448
  store <8 x double> %163, ptr %161, align 64, !tbaa !26
  %165 = getelementptr inbounds nuw i8, ptr %131, i64 8712
  %166 = load i64, ptr %126, align 8, !tbaa !22
  %167 = sitofp i64 %166 to double
  %168 = tail call double @llvm.fmuladd.f64(double %167, double 7.500000e-01, double -5.000000e-01)
  %169 = fcmp ogt double %168, 0.000000e+00
  %170 = select i1 %169, double %168, double 0.000000e+00
  %171 = fptosi double %170 to i64
  %172 = add nsw i64 %166, -2
  %173 = tail call i64 @llvm.smin.i64(i64 %172, i64 %171)
  %174 = sitofp i64 %173 to double
  %175 = fsub double %168, %174
  %176 = fsub double 1.000000e+00, %175
  %177 = insertelement <8 x double> poison, double %176, i64 0
  %178 = shufflevector <8 x double> %177, <8 x double> poison, <8 x i32> zeroinitializer
  %179 = load ptr, ptr %165, align 8, !tbaa !50
  %180 = getelementptr inbounds <8 x double>, ptr %179, i64 %173
  %181 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %182 = insertelement <8 x double> poison, double %175, i64 0
  %183 = shufflevector <8 x double> %182, <8 x double> poison, <8 x i32> zeroinitializer
  %184 = getelementptr i8, ptr %180, i64 64
  %185 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %186 = fmul <8 x double> %185, %183
  %187 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %178, <8 x double> %181, <8 x double> %186)
  store <8 x double> %187, ptr %164, align 64, !tbaa !26
  %188 = load i64, ptr %126, align 8, !tbaa !22
  %189 = sitofp i64 %188 to double
  %190 = tail call double @llvm.fmuladd.f64(double %189, double 5.000000e-01, double -5.000000e-01)
  %191 = fcmp ogt double %190, 0.000000e+00
  %192 = select i1 %191, double %190, double 0.000000e+00
  %193 = fptosi double %192 to i64
  %194 = add nsw i64 %188, -2
  %195 = tail call i64 @llvm.smin.i64(i64 %194, i64 %193)
  %196 = sitofp i64 %195 to double
  %197 = fsub double %190, %196
  %198 = fsub double 1.000000e+00, %197
  %199 = insertelement <8 x double> poison, double %198, i64 0
  %200 = shufflevector <8 x double> %199, <8 x double> poison, <8 x i32> zeroinitializer
  %201 = load ptr, ptr %165, align 8, !tbaa !50
  %202 = getelementptr inbounds <8 x double>, ptr %201, i64 %195
  %203 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %204 = insertelement <8 x double> poison, double %197, i64 0
  %205 = shufflevector <8 x double> %204, <8 x double> poison, <8 x i32> zeroinitializer
  %206 = getelementptr i8, ptr %202, i64 64
  %207 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %208 = fmul <8 x double> %207, %205
  %209 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %200, <8 x double> %203, <8 x double> %208)
  %210 = getelementptr inbounds nuw i8, ptr %128, i64 512
  store <8 x double> %209, ptr %210, align 64, !tbaa !26
  %211 = load i64, ptr %126, align 8, !tbaa !22
  %212 = sitofp i64 %211 to double
  %213 = tail call double @llvm.fmuladd.f64(double %212, double 2.500000e-01, double -5.000000e-01)
  %214 = fcmp ogt double %213, 0.000000e+00
  %215 = select i1 %214, double %213, double 0.000000e+00
  %216 = fptosi double %215 to i64
  %217 = add nsw i64 %211, -2
  %218 = tail call i64 @llvm.smin.i64(i64 %217, i64 %216)
  %219 = sitofp i64 %218 to double
  %220 = fsub double %213, %219
  %221 = fsub double 1.000000e+00, %220
  %222 = insertelement <8 x double> poison, double %221, i64 0
  %223 = shufflevector <8 x double> %222, <8 x double> poison, <8 x i32> zeroinitializer
  %224 = load ptr, ptr %165, align 8, !tbaa !50
  %225 = getelementptr inbounds <8 x double>, ptr %224, i64 %218
  %226 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %227 = insertelement <8 x double> poison, double %220, i64 0
  %228 = shufflevector <8 x double> %227, <8 x double> poison, <8 x i32> zeroinitializer
  %229 = getelementptr i8, ptr %225, i64 64
  %230 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %231 = fmul <8 x double> %230, %228
  %232 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %223, <8 x double> %226, <8 x double> %231)
  %233 = getelementptr inbounds nuw i8, ptr %128, i64 576
  store <8 x double> %232, ptr %233, align 64, !tbaa !26
  %234 = getelementptr inbounds nuw i8, ptr %128, i64 640
  %235 = add nuw nsw i64 %129, 1
  %236 = load i64, ptr %87, align 8, !tbaa !20
  %237 = icmp slt i64 %235, %236
  br i1 %237, label %127, label %238, !llvm.loop !153

238:                                              ; preds = %127, %107, %92
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %240 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %242 = load ptr, ptr %241, align 8
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %246 = getelementptr inbounds nuw i8, ptr %0, i64 6080
  %247 = load ptr, ptr %73, align 64
  %248 = icmp ult ptr %247, %86
  %249 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %250 = getelementptr inbounds nuw i8, ptr %93, i64 192
  %251 = extractelement <8 x i64> %72, i64 0
  %252 = icmp eq i64 %251, 0
  br i1 %252, label %390, label %253

253:                                              ; preds = %238
  %254 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %255 = load i64, ptr %254, align 64, !tbaa !30
  %256 = load i64, ptr %239, align 8, !tbaa !154
  %257 = icmp eq i64 %255, %256
  br i1 %257, label %260, label %258

258:                                              ; preds = %253
  %259 = load ptr, ptr %246, align 64, !tbaa !155
  br label %272

260:                                              ; preds = %253
  %261 = load i64, ptr %240, align 64, !tbaa !30
  %262 = load i64, ptr %243, align 8, !tbaa !40
  %263 = getelementptr inbounds i64, ptr %242, i64 %262
  store i64 %261, ptr %263, align 8, !tbaa !30
  %264 = load ptr, ptr %244, align 8, !tbaa !157
  %265 = load i64, ptr %243, align 8, !tbaa !40
  %266 = add nsw i64 %265, 1
  store i64 %266, ptr %243, align 8, !tbaa !40
  %267 = load i64, ptr %239, align 8, !tbaa !154
  %268 = mul nsw i64 %267, %265
  %269 = load i64, ptr %245, align 8, !tbaa !14
  %270 = mul nsw i64 %268, %269
  %271 = getelementptr inbounds double, ptr %264, i64 %270
  store ptr %271, ptr %246, align 64, !tbaa !155
  br label %272

272:                                              ; preds = %258, %260
  %273 = phi i64 [ %255, %258 ], [ 0, %260 ]
  %274 = phi ptr [ %259, %258 ], [ %271, %260 ]
  %275 = add nsw i64 %273, 1
  store i64 %275, ptr %254, align 64, !tbaa !30
  %276 = load i64, ptr %245, align 8, !tbaa !14
  %277 = mul nsw i64 %276, %273
  %278 = getelementptr inbounds double, ptr %274, i64 %277
  br i1 %248, label %337, label %279

279:                                              ; preds = %337, %272
  %280 = phi ptr [ %278, %272 ], [ %341, %337 ]
  %281 = load i64, ptr %249, align 64, !tbaa !16
  %282 = icmp sgt i64 %281, 0
  br i1 %282, label %283, label %325

283:                                              ; preds = %279
  %284 = and i64 %281, 3
  %285 = icmp ult i64 %281, 4
  br i1 %285, label %310, label %286

286:                                              ; preds = %283
  %287 = and i64 %281, 9223372036854775804
  br label %288

288:                                              ; preds = %288, %286
  %289 = phi i64 [ 0, %286 ], [ %307, %288 ]
  %290 = phi ptr [ %280, %286 ], [ %304, %288 ]
  %291 = phi i64 [ 0, %286 ], [ %308, %288 ]
  %292 = getelementptr i8, ptr %290, i64 8
  %293 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %294 = extractelement <8 x double> %293, i64 %289
  store double %294, ptr %290, align 8, !tbaa !41
  %295 = or disjoint i64 %289, 1
  %296 = getelementptr i8, ptr %290, i64 16
  %297 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %298 = extractelement <8 x double> %297, i64 %295
  store double %298, ptr %292, align 8, !tbaa !41
  %299 = or disjoint i64 %289, 2
  %300 = getelementptr i8, ptr %290, i64 24
  %301 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %302 = extractelement <8 x double> %301, i64 %299
  store double %302, ptr %296, align 8, !tbaa !41
  %303 = or disjoint i64 %289, 3
  %304 = getelementptr i8, ptr %290, i64 32
  %305 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %306 = extractelement <8 x double> %305, i64 %303
  store double %306, ptr %300, align 8, !tbaa !41
  %307 = add nuw nsw i64 %289, 4
  %308 = add i64 %291, 4
  %309 = icmp eq i64 %308, %287
  br i1 %309, label %310, label %288, !llvm.loop !158

310:                                              ; preds = %288, %283
  %311 = phi ptr [ poison, %283 ], [ %304, %288 ]
  %312 = phi i64 [ 0, %283 ], [ %307, %288 ]
  %313 = phi ptr [ %280, %283 ], [ %304, %288 ]
  %314 = icmp eq i64 %284, 0
  br i1 %314, label %325, label %315

315:                                              ; preds = %310, %315
  %316 = phi i64 [ %322, %315 ], [ %312, %310 ]
  %317 = phi ptr [ %319, %315 ], [ %313, %310 ]
  %318 = phi i64 [ %323, %315 ], [ 0, %310 ]
  %319 = getelementptr i8, ptr %317, i64 8
  %320 = load <8 x double>, ptr %86, align 64, !tbaa !26
  %321 = extractelement <8 x double> %320, i64 %316
  store double %321, ptr %317, align 8, !tbaa !41
  %322 = add nuw nsw i64 %316, 1
  %323 = add i64 %318, 1
  %324 = icmp eq i64 %323, %284
  br i1 %324, label %325, label %315, !llvm.loop !163

325:                                              ; preds = %310, %315, %279
  %326 = phi ptr [ %280, %279 ], [ %311, %310 ], [ %319, %315 ]
  %327 = load i64, ptr %94, align 8, !tbaa !43
  %328 = icmp eq i64 %327, 0
  br i1 %328, label %390, label %329

329:                                              ; preds = %325
  %330 = load double, ptr %93, align 8, !tbaa !41
  %331 = getelementptr inbounds nuw i8, ptr %326, i64 8
  store double %330, ptr %326, align 8, !tbaa !41
  %332 = getelementptr inbounds nuw i8, ptr %93, i64 64
  %333 = load double, ptr %332, align 8, !tbaa !41
  %334 = getelementptr inbounds nuw i8, ptr %326, i64 16
  store double %333, ptr %331, align 8, !tbaa !41
  %335 = getelementptr inbounds nuw i8, ptr %93, i64 128
  %336 = load double, ptr %335, align 8, !tbaa !41
  store double %336, ptr %334, align 8, !tbaa !41
  br i1 %282, label %344, label %390

337:                                              ; preds = %272, %337
  %338 = phi ptr [ %342, %337 ], [ %247, %272 ]
  %339 = phi ptr [ %341, %337 ], [ %278, %272 ]
  %340 = load double, ptr %338, align 8, !tbaa !41
  %341 = getelementptr inbounds nuw i8, ptr %339, i64 8
  store double %340, ptr %339, align 8, !tbaa !41
  %342 = getelementptr inbounds nuw i8, ptr %338, i64 64
  %343 = icmp ult ptr %342, %86
  br i1 %343, label %337, label %279, !llvm.loop !161

344:                                              ; preds = %329
  %345 = getelementptr inbounds nuw i8, ptr %326, i64 24
  %346 = getelementptr inbounds nuw i8, ptr %93, i64 256
  %347 = getelementptr inbounds nuw i8, ptr %93, i64 320
  %348 = getelementptr inbounds nuw i8, ptr %93, i64 384
  %349 = getelementptr inbounds nuw i8, ptr %93, i64 448
  %350 = getelementptr inbounds nuw i8, ptr %93, i64 512
  %351 = getelementptr inbounds nuw i8, ptr %93, i64 576
  %352 = getelementptr inbounds nuw i8, ptr %93, i64 640
  %353 = getelementptr inbounds nuw i8, ptr %93, i64 704
  %354 = getelementptr inbounds nuw i8, ptr %93, i64 768
  br label %355

355:                                              ; preds = %344, %355
  %356 = phi i64 [ %388, %355 ], [ 0, %344 ]
  %357 = phi ptr [ %387, %355 ], [ %345, %344 ]
  %358 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %359 = extractelement <8 x double> %358, i64 %356
  %360 = getelementptr inbounds nuw i8, ptr %357, i64 8
  store double %359, ptr %357, align 8, !tbaa !41
  %361 = load <8 x double>, ptr %346, align 64, !tbaa !26
  %362 = extractelement <8 x double> %361, i64 %356
  %363 = getelementptr inbounds nuw i8, ptr %357, i64 16
  store double %362, ptr %360, align 8, !tbaa !41
  %364 = load <8 x double>, ptr %347, align 64, !tbaa !26
  %365 = extractelement <8 x double> %364, i64 %356
  %366 = getelementptr inbounds nuw i8, ptr %357, i64 24
  store double %365, ptr %363, align 8, !tbaa !41
  %367 = load <8 x double>, ptr %348, align 64, !tbaa !26
  %368 = extractelement <8 x double> %367, i64 %356
  %369 = getelementptr inbounds nuw i8, ptr %357, i64 32
  store double %368, ptr %366, align 8, !tbaa !41
  %370 = load <8 x double>, ptr %349, align 64, !tbaa !26
  %371 = extractelement <8 x double> %370, i64 %356
  %372 = getelementptr inbounds nuw i8, ptr %357, i64 40
  store double %371, ptr %369, align 8, !tbaa !41
  %373 = load <8 x double>, ptr %350, align 64, !tbaa !26
  %374 = extractelement <8 x double> %373, i64 %356
  %375 = getelementptr inbounds nuw i8, ptr %357, i64 48
  store double %374, ptr %372, align 8, !tbaa !41
  %376 = load <8 x double>, ptr %351, align 64, !tbaa !26
  %377 = extractelement <8 x double> %376, i64 %356
  %378 = getelementptr inbounds nuw i8, ptr %357, i64 56
  store double %377, ptr %375, align 8, !tbaa !41
  %379 = load <8 x double>, ptr %352, align 64, !tbaa !26
  %380 = extractelement <8 x double> %379, i64 %356
  %381 = getelementptr inbounds nuw i8, ptr %357, i64 64
  store double %380, ptr %378, align 8, !tbaa !41
  %382 = load <8 x double>, ptr %353, align 64, !tbaa !26
  %383 = extractelement <8 x double> %382, i64 %356
  %384 = getelementptr inbounds nuw i8, ptr %357, i64 72
  store double %383, ptr %381, align 8, !tbaa !41
  %385 = load <8 x double>, ptr %354, align 64, !tbaa !26
  %386 = extractelement <8 x double> %385, i64 %356
  %387 = getelementptr inbounds nuw i8, ptr %357, i64 80
  store double %386, ptr %384, align 8, !tbaa !41
  %388 = add nuw nsw i64 %356, 1
  %389 = icmp eq i64 %388, %281
  br i1 %389, label %390, label %355, !llvm.loop !158

390:                                              ; preds = %355, %329, %325, %238
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #7
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 15) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !154
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %11 = getelementptr inbounds [8 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %13 = shl nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = sext i32 %14 to i64
  %16 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = sext i32 %13 to i64
  %18 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %20 = getelementptr inbounds [8 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !41
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !164
  %23 = mul i64 %3, 296
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr double, ptr %0, i64 %6
  br label %40

26:                                               ; preds = %40
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %28 = load i64, ptr %27, align 8, !tbaa !20
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %60

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %39 = load ptr, ptr %38, align 8, !tbaa !165
  br label %159

40:                                               ; preds = %46, %4
  %41 = phi i64 [ 0, %4 ], [ %59, %46 ]
  %42 = getelementptr double, ptr %24, i64 %41
  %43 = load double, ptr %42, align 8, !tbaa !41
  %44 = getelementptr <8 x double>, ptr %25, i64 %41
  store double %43, ptr %44, align 8, !tbaa !41
  %45 = icmp eq i64 %41, 36
  br i1 %45, label %26, label %46, !llvm.loop !166

46:                                               ; preds = %40
  %47 = or disjoint i64 %41, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !41
  %50 = getelementptr <8 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !41
  %51 = or disjoint i64 %41, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !41
  %54 = getelementptr <8 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !41
  %55 = or disjoint i64 %41, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !41
  %58 = getelementptr <8 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !41
  %59 = add nuw nsw i64 %41, 4
  br label %40

60:                                               ; preds = %578, %26
  %61 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %65 = getelementptr inbounds double, ptr %64, i64 %6
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %67 = getelementptr inbounds double, ptr %66, i64 %6
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %69 = getelementptr inbounds double, ptr %68, i64 %6
  %70 = getelementptr double, ptr %61, i64 %6
  %71 = getelementptr i8, ptr %70, i64 256
  store double 0.000000e+00, ptr %71, align 8, !tbaa !41
  %72 = getelementptr i8, ptr %70, i64 320
  store double 0.000000e+00, ptr %72, align 8, !tbaa !41
  %73 = load double, ptr %65, align 8, !tbaa !41
  store double %73, ptr %70, align 8, !tbaa !41
  %74 = load double, ptr %67, align 8, !tbaa !41
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 2688
  %76 = getelementptr inbounds double, ptr %75, i64 %6
  store double %74, ptr %76, align 8, !tbaa !41
  %77 = load double, ptr %69, align 8, !tbaa !41
  %78 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %79 = getelementptr inbounds double, ptr %78, i64 %6
  store double %77, ptr %79, align 8, !tbaa !41
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %81 = getelementptr inbounds double, ptr %80, i64 %6
  store double %77, ptr %81, align 8, !tbaa !41
  %82 = getelementptr double, ptr %62, i64 %6
  %83 = getelementptr i8, ptr %82, i64 256
  store double 0.000000e+00, ptr %83, align 8, !tbaa !41
  %84 = getelementptr i8, ptr %82, i64 320
  store double 0.000000e+00, ptr %84, align 8, !tbaa !41
  store double %73, ptr %82, align 8, !tbaa !41
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %86 = getelementptr inbounds double, ptr %85, i64 %6
  store double %74, ptr %86, align 8, !tbaa !41
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %88 = getelementptr inbounds double, ptr %87, i64 %6
  store double %77, ptr %88, align 8, !tbaa !41
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %90 = getelementptr inbounds double, ptr %89, i64 %6
  store double %77, ptr %90, align 8, !tbaa !41
  %91 = getelementptr double, ptr %63, i64 %6
  %92 = getelementptr i8, ptr %91, i64 256
  store double 0.000000e+00, ptr %92, align 8, !tbaa !41
  %93 = getelementptr i8, ptr %91, i64 320
  store double 0.000000e+00, ptr %93, align 8, !tbaa !41
  store double %73, ptr %91, align 8, !tbaa !41
  %94 = getelementptr inbounds nuw i8, ptr %0, i64 3456
  %95 = getelementptr inbounds double, ptr %94, i64 %6
  store double %74, ptr %95, align 8, !tbaa !41
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %97 = getelementptr inbounds double, ptr %96, i64 %6
  store double %77, ptr %97, align 8, !tbaa !41
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %99 = getelementptr inbounds double, ptr %98, i64 %6
  store double %77, ptr %99, align 8, !tbaa !41
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %101 = getelementptr inbounds double, ptr %100, i64 %6
  %102 = load double, ptr %101, align 8, !tbaa !41
  %103 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %104 = getelementptr inbounds double, ptr %103, i64 %6
  store double %102, ptr %104, align 8, !tbaa !41
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %106 = getelementptr inbounds double, ptr %105, i64 %6
  store double %102, ptr %106, align 8, !tbaa !41
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %108 = getelementptr inbounds double, ptr %107, i64 %6
  store double 1.000000e+09, ptr %108, align 8, !tbaa !41
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %110 = getelementptr inbounds double, ptr %109, i64 %6
  store double 0.000000e+00, ptr %110, align 8, !tbaa !41
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %112 = getelementptr inbounds double, ptr %111, i64 %6
  %113 = load double, ptr %112, align 8, !tbaa !41
  %114 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %115 = getelementptr inbounds double, ptr %114, i64 %6
  store double %113, ptr %115, align 8, !tbaa !41
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %117 = getelementptr inbounds double, ptr %116, i64 %6
  store double %113, ptr %117, align 8, !tbaa !41
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %119 = getelementptr inbounds double, ptr %118, i64 %6
  %120 = load double, ptr %119, align 8, !tbaa !41
  %121 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %122 = getelementptr inbounds double, ptr %121, i64 %6
  store double %120, ptr %122, align 8, !tbaa !41
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 4480
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 4864
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 4928
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 5184
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 5248
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %136 = getelementptr inbounds double, ptr %123, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !41
  %137 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !41
  %138 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !41
  %139 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !41
  %140 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !41
  %141 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !41
  %142 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !41
  %143 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !41
  %144 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !41
  %145 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !41
  %146 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %146, align 8, !tbaa !41
  %147 = getelementptr inbounds double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %147, align 8, !tbaa !41
  %148 = getelementptr inbounds double, ptr %135, i64 %6
  store double 0.000000e+00, ptr %148, align 8, !tbaa !41
  %149 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %150 = getelementptr inbounds i64, ptr %149, i64 %6
  store i64 0, ptr %150, align 8, !tbaa !30
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %152 = getelementptr inbounds i64, ptr %151, i64 %6
  store i64 0, ptr %152, align 8, !tbaa !30
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %154 = getelementptr inbounds i64, ptr %153, i64 %6
  store i64 -1, ptr %154, align 8, !tbaa !30
  %155 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %156 = getelementptr inbounds i64, ptr %155, i64 %6
  store i64 -1, ptr %156, align 8, !tbaa !30
  %157 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %158 = getelementptr inbounds i64, ptr %157, i64 %6
  store i64 -1, ptr %158, align 8, !tbaa !30
  ret void

159:                                              ; preds = %30, %578
  %160 = phi i64 [ 0, %30 ], [ %579, %578 ]
  %161 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %160
  %162 = load i64, ptr %33, align 64, !tbaa !16
  %163 = icmp sgt i64 %162, %6
  %164 = load i64, ptr %34, align 16, !tbaa !21
  %165 = load i64, ptr %35, align 8, !tbaa !22
  %166 = mul nsw i64 %162, %3
  %167 = select i1 %163, i64 %6, i64 0
  %168 = add nsw i64 %167, %166
  %169 = getelementptr inbounds nuw i8, ptr %161, i64 8512
  %170 = load i64, ptr %169, align 64, !tbaa !31
  %171 = load ptr, ptr %36, align 8, !tbaa !167
  %172 = mul i64 %168, 368
  %173 = getelementptr i8, ptr %171, i64 %172
  %174 = getelementptr double, ptr %161, i64 %6
  br label %177

175:                                              ; preds = %177
  %176 = icmp eq i64 %170, 0
  br i1 %163, label %191, label %188

177:                                              ; preds = %177, %159
  %178 = phi i64 [ 0, %159 ], [ %186, %177 ]
  %179 = getelementptr double, ptr %173, i64 %178
  %180 = load double, ptr %179, align 8, !tbaa !41
  %181 = getelementptr <8 x double>, ptr %174, i64 %178
  store double %180, ptr %181, align 8, !tbaa !41
  %182 = or disjoint i64 %178, 1
  %183 = getelementptr double, ptr %173, i64 %182
  %184 = load double, ptr %183, align 8, !tbaa !41
  %185 = getelementptr <8 x double>, ptr %174, i64 %182
  store double %184, ptr %185, align 8, !tbaa !41
  %186 = add nuw nsw i64 %178, 2
  %187 = icmp eq i64 %186, 46
  br i1 %187, label %175, label %177, !llvm.loop !168

188:                                              ; preds = %175
  %189 = getelementptr inbounds nuw i8, ptr %161, i64 128
  %190 = getelementptr inbounds double, ptr %189, i64 %6
  store double 0.000000e+00, ptr %190, align 8, !tbaa !41
  br label %191

191:                                              ; preds = %188, %175
  %192 = load ptr, ptr %37, align 8, !tbaa !169
  %193 = getelementptr inbounds i64, ptr %39, i64 %168
  %194 = load i64, ptr %193, align 8, !tbaa !30
  %195 = mul nsw i64 %164, 3
  %196 = add nsw i64 %164, 1
  %197 = select i1 %176, i64 0, i64 2
  %198 = shl i64 %196, %197
  %199 = add nsw i64 %198, %195
  %200 = mul nsw i64 %194, %199
  %201 = getelementptr inbounds double, ptr %192, i64 %200
  %202 = getelementptr inbounds nuw i8, ptr %161, i64 960
  %203 = getelementptr inbounds double, ptr %202, i64 %6
  %204 = load double, ptr %203, align 8, !tbaa !41
  %205 = load double, ptr %174, align 8, !tbaa !41
  br i1 %176, label %206, label %211

206:                                              ; preds = %191
  %207 = getelementptr inbounds nuw i8, ptr %161, i64 8520
  %208 = getelementptr inbounds [8 x ptr], ptr %207, i64 0, i64 %6
  %209 = load ptr, ptr %208, align 8, !tbaa !155
  %210 = icmp ne ptr %209, %201
  br label %211

211:                                              ; preds = %206, %191
  %212 = phi i1 [ true, %191 ], [ %210, %206 ]
  %213 = getelementptr inbounds nuw i8, ptr %161, i64 8520
  %214 = getelementptr inbounds [8 x ptr], ptr %213, i64 0, i64 %6
  store ptr %201, ptr %214, align 8, !tbaa !155
  %215 = icmp sgt i64 %164, 0
  %216 = select i1 %215, i1 %212, i1 false
  br i1 %216, label %217, label %247

217:                                              ; preds = %211
  %218 = getelementptr inbounds nuw i8, ptr %161, i64 8672
  %219 = load ptr, ptr %218, align 32, !tbaa !73
  %220 = getelementptr double, ptr %219, i64 %6
  %221 = getelementptr double, ptr %201, i64 %164
  %222 = getelementptr inbounds nuw i8, ptr %161, i64 8680
  %223 = load ptr, ptr %222, align 8, !tbaa !48
  %224 = getelementptr double, ptr %223, i64 %6
  %225 = shl i64 %164, 4
  %226 = getelementptr i8, ptr %201, i64 %225
  %227 = getelementptr inbounds nuw i8, ptr %161, i64 8688
  %228 = load ptr, ptr %227, align 16, !tbaa !140
  %229 = getelementptr double, ptr %228, i64 %6
  %230 = and i64 %164, 1
  %231 = icmp eq i64 %164, 1
  br i1 %231, label %234, label %232

232:                                              ; preds = %217
  %233 = and i64 %164, 9223372036854775806
  br label %259

234:                                              ; preds = %259, %217
  %235 = phi i64 [ 0, %217 ], [ %281, %259 ]
  %236 = icmp eq i64 %230, 0
  br i1 %236, label %247, label %237

237:                                              ; preds = %234
  %238 = getelementptr inbounds nuw double, ptr %201, i64 %235
  %239 = load double, ptr %238, align 8, !tbaa !41
  %240 = getelementptr <8 x double>, ptr %220, i64 %235
  store double %239, ptr %240, align 8, !tbaa !41
  %241 = getelementptr double, ptr %221, i64 %235
  %242 = load double, ptr %241, align 8, !tbaa !41
  %243 = getelementptr <8 x double>, ptr %224, i64 %235
  store double %242, ptr %243, align 8, !tbaa !41
  %244 = getelementptr double, ptr %226, i64 %235
  %245 = load double, ptr %244, align 8, !tbaa !41
  %246 = getelementptr <8 x double>, ptr %229, i64 %235
  store double %245, ptr %246, align 8, !tbaa !41
  br label %247

247:                                              ; preds = %237, %234, %211
  %248 = icmp sgt i64 %198, 0
  %249 = select i1 %248, i1 %212, i1 false
  br i1 %249, label %250, label %296

250:                                              ; preds = %247
  %251 = getelementptr double, ptr %201, i64 %195
  %252 = getelementptr inbounds nuw i8, ptr %161, i64 8696
  %253 = load ptr, ptr %252, align 8, !tbaa !36
  %254 = getelementptr double, ptr %253, i64 %6
  %255 = and i64 %198, 3
  %256 = icmp ult i64 %198, 4
  br i1 %256, label %284, label %257

257:                                              ; preds = %250
  %258 = and i64 %198, 9223372036854775804
  br label %305

259:                                              ; preds = %259, %232
  %260 = phi i64 [ 0, %232 ], [ %281, %259 ]
  %261 = phi i64 [ 0, %232 ], [ %282, %259 ]
  %262 = getelementptr inbounds nuw double, ptr %201, i64 %260
  %263 = load double, ptr %262, align 8, !tbaa !41
  %264 = getelementptr <8 x double>, ptr %220, i64 %260
  store double %263, ptr %264, align 8, !tbaa !41
  %265 = getelementptr double, ptr %221, i64 %260
  %266 = load double, ptr %265, align 8, !tbaa !41
  %267 = getelementptr <8 x double>, ptr %224, i64 %260
  store double %266, ptr %267, align 8, !tbaa !41
  %268 = getelementptr double, ptr %226, i64 %260
  %269 = load double, ptr %268, align 8, !tbaa !41
  %270 = getelementptr <8 x double>, ptr %229, i64 %260
  store double %269, ptr %270, align 8, !tbaa !41
  %271 = or disjoint i64 %260, 1
  %272 = getelementptr inbounds nuw double, ptr %201, i64 %271
  %273 = load double, ptr %272, align 8, !tbaa !41
  %274 = getelementptr <8 x double>, ptr %220, i64 %271
  store double %273, ptr %274, align 8, !tbaa !41
  %275 = getelementptr double, ptr %221, i64 %271
  %276 = load double, ptr %275, align 8, !tbaa !41
  %277 = getelementptr <8 x double>, ptr %224, i64 %271
  store double %276, ptr %277, align 8, !tbaa !41
  %278 = getelementptr double, ptr %226, i64 %271
  %279 = load double, ptr %278, align 8, !tbaa !41
  %280 = getelementptr <8 x double>, ptr %229, i64 %271
  store double %279, ptr %280, align 8, !tbaa !41
  %281 = add nuw nsw i64 %260, 2
  %282 = add i64 %261, 2
  %283 = icmp eq i64 %282, %233
  br i1 %283, label %234, label %259, !llvm.loop !170

284:                                              ; preds = %305, %250
  %285 = phi i64 [ 0, %250 ], [ %323, %305 ]
  %286 = icmp eq i64 %255, 0
  br i1 %286, label %296, label %287

287:                                              ; preds = %284, %287
  %288 = phi i64 [ %293, %287 ], [ %285, %284 ]
  %289 = phi i64 [ %294, %287 ], [ 0, %284 ]
  %290 = getelementptr double, ptr %251, i64 %288
  %291 = load double, ptr %290, align 8, !tbaa !41
  %292 = getelementptr <8 x double>, ptr %254, i64 %288
  store double %291, ptr %292, align 8, !tbaa !41
  %293 = add nuw nsw i64 %288, 1
  %294 = add i64 %289, 1
  %295 = icmp eq i64 %294, %255
  br i1 %295, label %296, label %287, !llvm.loop !171

296:                                              ; preds = %284, %287, %247
  %297 = icmp ne i64 %170, 0
  %298 = icmp sgt i64 %164, -1
  %299 = select i1 %297, i1 %298, i1 false
  br i1 %299, label %300, label %326

300:                                              ; preds = %296
  %301 = fdiv double 1.000000e+00, %205
  %302 = getelementptr inbounds nuw i8, ptr %161, i64 8696
  %303 = load ptr, ptr %302, align 8, !tbaa !36
  %304 = getelementptr double, ptr %303, i64 %6
  br label %466

305:                                              ; preds = %305, %257
  %306 = phi i64 [ 0, %257 ], [ %323, %305 ]
  %307 = phi i64 [ 0, %257 ], [ %324, %305 ]
  %308 = getelementptr double, ptr %251, i64 %306
  %309 = load double, ptr %308, align 8, !tbaa !41
  %310 = getelementptr <8 x double>, ptr %254, i64 %306
  store double %309, ptr %310, align 8, !tbaa !41
  %311 = or disjoint i64 %306, 1
  %312 = getelementptr double, ptr %251, i64 %311
  %313 = load double, ptr %312, align 8, !tbaa !41
  %314 = getelementptr <8 x double>, ptr %254, i64 %311
  store double %313, ptr %314, align 8, !tbaa !41
  %315 = or disjoint i64 %306, 2
  %316 = getelementptr double, ptr %251, i64 %315
  %317 = load double, ptr %316, align 8, !tbaa !41
  %318 = getelementptr <8 x double>, ptr %254, i64 %315
  store double %317, ptr %318, align 8, !tbaa !41
  %319 = or disjoint i64 %306, 3
  %320 = getelementptr double, ptr %251, i64 %319
  %321 = load double, ptr %320, align 8, !tbaa !41
  %322 = getelementptr <8 x double>, ptr %254, i64 %319
  store double %321, ptr %322, align 8, !tbaa !41
  %323 = add nuw nsw i64 %306, 4
  %324 = add i64 %307, 4
  %325 = icmp eq i64 %324, %258
  br i1 %325, label %284, label %305, !llvm.loop !172

326:                                              ; preds = %466, %296
  %327 = getelementptr inbounds nuw i8, ptr %161, i64 2560
  %328 = getelementptr inbounds double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !41
  %330 = getelementptr inbounds nuw i8, ptr %161, i64 2624
  %331 = getelementptr inbounds double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !41
  %333 = getelementptr inbounds nuw i8, ptr %161, i64 2688
  %334 = getelementptr inbounds double, ptr %333, i64 %6
  %335 = load double, ptr %334, align 8, !tbaa !41
  %336 = getelementptr inbounds nuw i8, ptr %161, i64 2752
  %337 = getelementptr inbounds double, ptr %336, i64 %6
  %338 = load double, ptr %337, align 8, !tbaa !41
  %339 = tail call double @llvm.fmuladd.f64(double %205, double %338, double %335)
  %340 = tail call double @llvm.fmuladd.f64(double %205, double %339, double %332)
  %341 = tail call double @llvm.fmuladd.f64(double %205, double %340, double %329)
  %342 = getelementptr inbounds nuw i8, ptr %161, i64 832
  %343 = getelementptr inbounds double, ptr %342, i64 %6
  %344 = load double, ptr %343, align 8, !tbaa !41
  %345 = getelementptr inbounds nuw i8, ptr %161, i64 1408
  %346 = getelementptr inbounds double, ptr %345, i64 %6
  %347 = load double, ptr %346, align 8, !tbaa !41
  %348 = getelementptr inbounds nuw i8, ptr %161, i64 1536
  %349 = getelementptr inbounds double, ptr %348, i64 %6
  %350 = load double, ptr %349, align 8, !tbaa !41
  %351 = fsub double %347, %350
  %352 = fmul double %344, %351
  %353 = getelementptr inbounds nuw i8, ptr %161, i64 2944
  %354 = getelementptr inbounds nuw i8, ptr %161, i64 3840
  %355 = getelementptr inbounds nuw i8, ptr %161, i64 4736
  %356 = getelementptr inbounds nuw i8, ptr %161, i64 896
  %357 = getelementptr inbounds double, ptr %356, i64 %6
  %358 = getelementptr inbounds nuw i8, ptr %161, i64 1024
  %359 = getelementptr inbounds double, ptr %358, i64 %6
  %360 = getelementptr double, ptr %353, i64 %6
  %361 = getelementptr i8, ptr %360, i64 320
  store double 0.000000e+00, ptr %361, align 8, !tbaa !41
  %362 = getelementptr i8, ptr %360, i64 384
  store double 0.000000e+00, ptr %362, align 8, !tbaa !41
  %363 = getelementptr i8, ptr %360, i64 448
  store double 0.000000e+00, ptr %363, align 8, !tbaa !41
  %364 = getelementptr i8, ptr %360, i64 512
  store double 0.000000e+00, ptr %364, align 8, !tbaa !41
  %365 = getelementptr i8, ptr %360, i64 576
  store double 0.000000e+00, ptr %365, align 8, !tbaa !41
  %366 = getelementptr i8, ptr %360, i64 704
  store double 0.000000e+00, ptr %366, align 8, !tbaa !41
  %367 = getelementptr i8, ptr %360, i64 768
  store double 0.000000e+00, ptr %367, align 8, !tbaa !41
  store double %205, ptr %360, align 8, !tbaa !41
  %368 = getelementptr inbounds nuw i8, ptr %161, i64 3008
  %369 = getelementptr inbounds double, ptr %368, i64 %6
  store double %347, ptr %369, align 8, !tbaa !41
  %370 = load double, ptr %357, align 8, !tbaa !41
  %371 = getelementptr inbounds nuw i8, ptr %161, i64 3072
  %372 = getelementptr inbounds double, ptr %371, i64 %6
  store double %370, ptr %372, align 8, !tbaa !41
  %373 = getelementptr inbounds nuw i8, ptr %161, i64 3136
  %374 = getelementptr inbounds double, ptr %373, i64 %6
  store double %352, ptr %374, align 8, !tbaa !41
  %375 = getelementptr inbounds nuw i8, ptr %161, i64 3584
  %376 = getelementptr inbounds double, ptr %375, i64 %6
  store double %204, ptr %376, align 8, !tbaa !41
  %377 = load double, ptr %359, align 8, !tbaa !41
  %378 = getelementptr inbounds nuw i8, ptr %161, i64 3200
  %379 = getelementptr inbounds double, ptr %378, i64 %6
  store double %377, ptr %379, align 8, !tbaa !41
  %380 = getelementptr inbounds nuw i8, ptr %161, i64 3776
  %381 = getelementptr inbounds double, ptr %380, i64 %6
  store double %341, ptr %381, align 8, !tbaa !41
  %382 = getelementptr double, ptr %354, i64 %6
  %383 = getelementptr i8, ptr %382, i64 320
  store double 0.000000e+00, ptr %383, align 8, !tbaa !41
  %384 = getelementptr i8, ptr %382, i64 384
  store double 0.000000e+00, ptr %384, align 8, !tbaa !41
  %385 = getelementptr i8, ptr %382, i64 448
  store double 0.000000e+00, ptr %385, align 8, !tbaa !41
  %386 = getelementptr i8, ptr %382, i64 512
  store double 0.000000e+00, ptr %386, align 8, !tbaa !41
  %387 = getelementptr i8, ptr %382, i64 576
  store double 0.000000e+00, ptr %387, align 8, !tbaa !41
  %388 = getelementptr i8, ptr %382, i64 704
  store double 0.000000e+00, ptr %388, align 8, !tbaa !41
  %389 = getelementptr i8, ptr %382, i64 768
  store double 0.000000e+00, ptr %389, align 8, !tbaa !41
  store double %205, ptr %382, align 8, !tbaa !41
  %390 = getelementptr inbounds nuw i8, ptr %161, i64 3904
  %391 = getelementptr inbounds double, ptr %390, i64 %6
  store double %347, ptr %391, align 8, !tbaa !41
  %392 = getelementptr inbounds nuw i8, ptr %161, i64 3968
  %393 = getelementptr inbounds double, ptr %392, i64 %6
  store double %370, ptr %393, align 8, !tbaa !41
  %394 = getelementptr inbounds nuw i8, ptr %161, i64 4032
  %395 = getelementptr inbounds double, ptr %394, i64 %6
  store double %352, ptr %395, align 8, !tbaa !41
  %396 = getelementptr inbounds nuw i8, ptr %161, i64 4480
  %397 = getelementptr inbounds double, ptr %396, i64 %6
  store double %204, ptr %397, align 8, !tbaa !41
  %398 = getelementptr inbounds nuw i8, ptr %161, i64 4096
  %399 = getelementptr inbounds double, ptr %398, i64 %6
  store double %377, ptr %399, align 8, !tbaa !41
  %400 = getelementptr inbounds nuw i8, ptr %161, i64 4672
  %401 = getelementptr inbounds double, ptr %400, i64 %6
  store double %341, ptr %401, align 8, !tbaa !41
  %402 = getelementptr double, ptr %355, i64 %6
  %403 = getelementptr i8, ptr %402, i64 320
  store double 0.000000e+00, ptr %403, align 8, !tbaa !41
  %404 = getelementptr i8, ptr %402, i64 384
  store double 0.000000e+00, ptr %404, align 8, !tbaa !41
  %405 = getelementptr i8, ptr %402, i64 448
  store double 0.000000e+00, ptr %405, align 8, !tbaa !41
  %406 = getelementptr i8, ptr %402, i64 512
  store double 0.000000e+00, ptr %406, align 8, !tbaa !41
  %407 = getelementptr i8, ptr %402, i64 576
  store double 0.000000e+00, ptr %407, align 8, !tbaa !41
  %408 = getelementptr i8, ptr %402, i64 704
  store double 0.000000e+00, ptr %408, align 8, !tbaa !41
  %409 = getelementptr i8, ptr %402, i64 768
  store double 0.000000e+00, ptr %409, align 8, !tbaa !41
  store double %205, ptr %402, align 8, !tbaa !41
  %410 = load double, ptr %346, align 8, !tbaa !41
  %411 = getelementptr inbounds nuw i8, ptr %161, i64 4800
  %412 = getelementptr inbounds double, ptr %411, i64 %6
  store double %410, ptr %412, align 8, !tbaa !41
  %413 = getelementptr inbounds nuw i8, ptr %161, i64 4864
  %414 = getelementptr inbounds double, ptr %413, i64 %6
  store double %370, ptr %414, align 8, !tbaa !41
  %415 = getelementptr inbounds nuw i8, ptr %161, i64 4928
  %416 = getelementptr inbounds double, ptr %415, i64 %6
  store double %352, ptr %416, align 8, !tbaa !41
  %417 = getelementptr inbounds nuw i8, ptr %161, i64 5376
  %418 = getelementptr inbounds double, ptr %417, i64 %6
  store double %204, ptr %418, align 8, !tbaa !41
  %419 = getelementptr inbounds nuw i8, ptr %161, i64 4992
  %420 = getelementptr inbounds double, ptr %419, i64 %6
  store double %377, ptr %420, align 8, !tbaa !41
  %421 = getelementptr inbounds nuw i8, ptr %161, i64 5568
  %422 = getelementptr inbounds double, ptr %421, i64 %6
  store double %341, ptr %422, align 8, !tbaa !41
  %423 = load double, ptr %357, align 8, !tbaa !41
  %424 = fadd double %352, %423
  %425 = getelementptr inbounds nuw i8, ptr %161, i64 1600
  %426 = getelementptr inbounds double, ptr %425, i64 %6
  store double %424, ptr %426, align 8, !tbaa !41
  %427 = fcmp ogt double %423, 0.000000e+00
  %428 = fdiv double 1.000000e+00, %423
  %429 = select i1 %427, double %428, double 0.000000e+00
  %430 = getelementptr inbounds nuw i8, ptr %161, i64 7680
  %431 = getelementptr inbounds double, ptr %430, i64 %6
  store double %429, ptr %431, align 8, !tbaa !41
  %432 = getelementptr inbounds nuw i8, ptr %161, i64 704
  %433 = getelementptr inbounds double, ptr %432, i64 %6
  %434 = load double, ptr %433, align 8, !tbaa !41
  %435 = fdiv double 1.000000e+00, %434
  %436 = getelementptr inbounds nuw i8, ptr %161, i64 7744
  %437 = getelementptr inbounds double, ptr %436, i64 %6
  store double %435, ptr %437, align 8, !tbaa !41
  %438 = load double, ptr %343, align 8, !tbaa !41
  %439 = fdiv double 1.000000e+00, %438
  %440 = getelementptr inbounds nuw i8, ptr %161, i64 7808
  %441 = getelementptr inbounds double, ptr %440, i64 %6
  store double %439, ptr %441, align 8, !tbaa !41
  %442 = getelementptr inbounds nuw i8, ptr %161, i64 5952
  %443 = getelementptr inbounds nuw i8, ptr %161, i64 6784
  %444 = getelementptr inbounds nuw i8, ptr %161, i64 6848
  %445 = getelementptr inbounds nuw i8, ptr %161, i64 7552
  %446 = getelementptr inbounds double, ptr %442, i64 %6
  store double %204, ptr %446, align 8, !tbaa !41
  %447 = getelementptr inbounds double, ptr %443, i64 %6
  store double %204, ptr %447, align 8, !tbaa !41
  %448 = getelementptr inbounds double, ptr %444, i64 %6
  store double %204, ptr %448, align 8, !tbaa !41
  %449 = getelementptr inbounds double, ptr %445, i64 %6
  store double %204, ptr %449, align 8, !tbaa !41
  %450 = getelementptr inbounds nuw i8, ptr %161, i64 6016
  %451 = getelementptr inbounds nuw i8, ptr %161, i64 6080
  %452 = getelementptr inbounds nuw i8, ptr %161, i64 7616
  %453 = getelementptr inbounds nuw i8, ptr %161, i64 7488
  %454 = getelementptr inbounds nuw i8, ptr %161, i64 7232
  %455 = getelementptr inbounds double, ptr %450, i64 %6
  store double 0.000000e+00, ptr %455, align 8, !tbaa !41
  %456 = getelementptr inbounds double, ptr %451, i64 %6
  store double 0.000000e+00, ptr %456, align 8, !tbaa !41
  %457 = getelementptr inbounds double, ptr %452, i64 %6
  store double 0.000000e+00, ptr %457, align 8, !tbaa !41
  %458 = getelementptr inbounds double, ptr %453, i64 %6
  store double 0.000000e+00, ptr %458, align 8, !tbaa !41
  %459 = getelementptr inbounds double, ptr %454, i64 %6
  store double 0.000000e+00, ptr %459, align 8, !tbaa !41
  %460 = getelementptr inbounds nuw i8, ptr %161, i64 8320
  %461 = getelementptr inbounds i64, ptr %460, i64 %6
  store i64 0, ptr %461, align 8, !tbaa !30
  %462 = getelementptr inbounds nuw i8, ptr %161, i64 8384
  %463 = getelementptr inbounds i64, ptr %462, i64 %6
  store i64 -1, ptr %463, align 8, !tbaa !30
  %464 = getelementptr inbounds nuw i8, ptr %161, i64 8448
  %465 = getelementptr inbounds i64, ptr %464, i64 %6
  store i64 0, ptr %465, align 8, !tbaa !30
  br i1 %215, label %488, label %504

466:                                              ; preds = %300, %466
  %467 = phi i64 [ 0, %300 ], [ %486, %466 ]
  %468 = icmp slt i64 %467, %170
  %469 = select i1 %468, double %301, double 1.000000e+00
  %470 = shl i64 %467, 8
  %471 = getelementptr i8, ptr %304, i64 %470
  %472 = load double, ptr %471, align 8, !tbaa !41
  %473 = fmul double %469, %472
  store double %473, ptr %471, align 8, !tbaa !41
  %474 = fdiv double %469, %205
  %475 = getelementptr i8, ptr %471, i64 64
  %476 = load double, ptr %475, align 8, !tbaa !41
  %477 = fmul double %474, %476
  store double %477, ptr %475, align 8, !tbaa !41
  %478 = fdiv double %474, %205
  %479 = getelementptr i8, ptr %471, i64 128
  %480 = load double, ptr %479, align 8, !tbaa !41
  %481 = fmul double %478, %480
  store double %481, ptr %479, align 8, !tbaa !41
  %482 = fdiv double %478, %205
  %483 = getelementptr i8, ptr %471, i64 192
  %484 = load double, ptr %483, align 8, !tbaa !41
  %485 = fmul double %482, %484
  store double %485, ptr %483, align 8, !tbaa !41
  %486 = add nuw nsw i64 %467, 1
  %487 = icmp slt i64 %467, %164
  br i1 %487, label %466, label %326, !llvm.loop !173

488:                                              ; preds = %326
  %489 = getelementptr inbounds nuw i8, ptr %161, i64 8600
  %490 = load ptr, ptr %489, align 8, !tbaa !57
  %491 = getelementptr double, ptr %490, i64 %6
  %492 = getelementptr inbounds nuw i8, ptr %161, i64 8592
  %493 = load ptr, ptr %492, align 16, !tbaa !46
  %494 = getelementptr double, ptr %493, i64 %6
  %495 = getelementptr inbounds nuw i8, ptr %161, i64 8584
  %496 = load ptr, ptr %495, align 8, !tbaa !58
  %497 = getelementptr double, ptr %496, i64 %6
  %498 = getelementptr inbounds nuw i8, ptr %161, i64 8624
  %499 = load ptr, ptr %498, align 16, !tbaa !47
  %500 = getelementptr double, ptr %499, i64 %6
  %501 = getelementptr inbounds nuw i8, ptr %161, i64 8616
  %502 = load ptr, ptr %501, align 8, !tbaa !65
  %503 = getelementptr double, ptr %502, i64 %6
  br label %517

504:                                              ; preds = %517, %326
  %505 = icmp slt i64 %165, 0
  br i1 %505, label %578, label %506

506:                                              ; preds = %504
  %507 = getelementptr inbounds nuw i8, ptr %161, i64 8768
  %508 = load ptr, ptr %507, align 64, !tbaa !60
  %509 = getelementptr double, ptr %508, i64 %6
  %510 = getelementptr inbounds nuw i8, ptr %161, i64 8760
  %511 = load ptr, ptr %510, align 8, !tbaa !49
  %512 = getelementptr double, ptr %511, i64 %6
  %513 = icmp eq i64 %165, 0
  br i1 %513, label %526, label %514

514:                                              ; preds = %506
  %515 = add nuw i64 %165, 1
  %516 = and i64 %515, -2
  br label %551

517:                                              ; preds = %488, %517
  %518 = phi i64 [ 0, %488 ], [ %524, %517 ]
  %519 = getelementptr <8 x double>, ptr %491, i64 %518
  store double %204, ptr %519, align 8, !tbaa !41
  %520 = getelementptr <8 x double>, ptr %494, i64 %518
  store double %204, ptr %520, align 8, !tbaa !41
  %521 = getelementptr <8 x double>, ptr %497, i64 %518
  store double %204, ptr %521, align 8, !tbaa !41
  %522 = getelementptr <8 x double>, ptr %500, i64 %518
  store double 1.000000e+00, ptr %522, align 8, !tbaa !41
  %523 = getelementptr <8 x double>, ptr %503, i64 %518
  store double 1.000000e+00, ptr %523, align 8, !tbaa !41
  %524 = add nuw nsw i64 %518, 1
  %525 = icmp eq i64 %524, %164
  br i1 %525, label %504, label %517, !llvm.loop !174

526:                                              ; preds = %565, %506
  %527 = phi i64 [ 0, %506 ], [ %569, %565 ]
  %528 = and i64 %165, 1
  %529 = icmp eq i64 %528, 0
  br i1 %529, label %530, label %538

530:                                              ; preds = %526
  %531 = icmp slt i64 %527, %165
  br i1 %531, label %534, label %532

532:                                              ; preds = %530
  %533 = load double, ptr %346, align 8, !tbaa !41
  br label %534

534:                                              ; preds = %532, %530
  %535 = phi double [ %533, %532 ], [ %341, %530 ]
  %536 = getelementptr <8 x double>, ptr %509, i64 %527
  store double %535, ptr %536, align 8, !tbaa !41
  %537 = getelementptr <8 x double>, ptr %512, i64 %527
  store double %535, ptr %537, align 8, !tbaa !41
  br label %538

538:                                              ; preds = %526, %534
  %539 = icmp eq i64 %165, 0
  br i1 %539, label %578, label %540

540:                                              ; preds = %538
  %541 = getelementptr inbounds nuw i8, ptr %161, i64 8720
  %542 = load ptr, ptr %541, align 16, !tbaa !62
  %543 = getelementptr double, ptr %542, i64 %6
  %544 = getelementptr inbounds nuw i8, ptr %161, i64 8712
  %545 = load ptr, ptr %544, align 8, !tbaa !50
  %546 = getelementptr double, ptr %545, i64 %6
  %547 = and i64 %165, 1
  %548 = icmp eq i64 %165, 1
  br i1 %548, label %572, label %549

549:                                              ; preds = %540
  %550 = and i64 %165, 9223372036854775806
  br label %582

551:                                              ; preds = %565, %514
  %552 = phi i64 [ 0, %514 ], [ %569, %565 ]
  %553 = phi i64 [ 0, %514 ], [ %570, %565 ]
  %554 = icmp slt i64 %552, %165
  br i1 %554, label %557, label %555

555:                                              ; preds = %551
  %556 = load double, ptr %346, align 8, !tbaa !41
  br label %557

557:                                              ; preds = %551, %555
  %558 = phi double [ %556, %555 ], [ %341, %551 ]
  %559 = getelementptr <8 x double>, ptr %509, i64 %552
  store double %558, ptr %559, align 8, !tbaa !41
  %560 = getelementptr <8 x double>, ptr %512, i64 %552
  store double %558, ptr %560, align 8, !tbaa !41
  %561 = or disjoint i64 %552, 1
  %562 = icmp slt i64 %561, %165
  br i1 %562, label %565, label %563

563:                                              ; preds = %557
  %564 = load double, ptr %346, align 8, !tbaa !41
  br label %565

565:                                              ; preds = %563, %557
  %566 = phi double [ %564, %563 ], [ %341, %557 ]
  %567 = getelementptr <8 x double>, ptr %509, i64 %561
  store double %566, ptr %567, align 8, !tbaa !41
  %568 = getelementptr <8 x double>, ptr %512, i64 %561
  store double %566, ptr %568, align 8, !tbaa !41
  %569 = add nuw i64 %552, 2
  %570 = add i64 %553, 2
  %571 = icmp eq i64 %570, %516
  br i1 %571, label %526, label %551, !llvm.loop !175

572:                                              ; preds = %582, %540
  %573 = phi i64 [ 0, %540 ], [ %590, %582 ]
  %574 = icmp eq i64 %547, 0
  br i1 %574, label %578, label %575

575:                                              ; preds = %572
  %576 = getelementptr <8 x double>, ptr %543, i64 %573
  store double %204, ptr %576, align 8, !tbaa !41
  %577 = getelementptr <8 x double>, ptr %546, i64 %573
  store double %204, ptr %577, align 8, !tbaa !41
  br label %578

578:                                              ; preds = %575, %572, %504, %538
  %579 = add nuw nsw i64 %160, 1
  %580 = load i64, ptr %27, align 8, !tbaa !20
  %581 = icmp slt i64 %579, %580
  br i1 %581, label %159, label %60, !llvm.loop !176

582:                                              ; preds = %582, %549
  %583 = phi i64 [ 0, %549 ], [ %590, %582 ]
  %584 = phi i64 [ 0, %549 ], [ %591, %582 ]
  %585 = getelementptr <8 x double>, ptr %543, i64 %583
  store double %204, ptr %585, align 8, !tbaa !41
  %586 = getelementptr <8 x double>, ptr %546, i64 %583
  store double %204, ptr %586, align 8, !tbaa !41
  %587 = or disjoint i64 %583, 1
  %588 = getelementptr <8 x double>, ptr %543, i64 %587
  store double %204, ptr %588, align 8, !tbaa !41
  %589 = getelementptr <8 x double>, ptr %546, i64 %587
  store double %204, ptr %589, align 8, !tbaa !41
  %590 = add nuw nsw i64 %583, 2
  %591 = add i64 %584, 2
  %592 = icmp eq i64 %591, %550
  br i1 %592, label %572, label %582, !llvm.loop !177
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 15) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !178
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !179
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !41
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !180
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !41
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !41
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
  %40 = load double, ptr %39, align 8, !tbaa !41
  %41 = getelementptr inbounds nuw i8, ptr %39, i64 40
  %42 = load double, ptr %41, align 8, !tbaa !41
  %43 = fcmp ult double %42, 0.000000e+00
  br i1 %43, label %49, label %44

44:                                               ; preds = %36
  %45 = load double, ptr %35, align 8, !tbaa !41
  %46 = fsub double %42, %45
  %47 = fcmp ogt double %46, 0x3EB0C6F7A0B5ED8D
  %48 = select i1 %47, double %46, double 0.000000e+00
  br label %49

49:                                               ; preds = %44, %36
  %50 = phi double [ %48, %44 ], [ %40, %36 ]
  %51 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %52 = load double, ptr %51, align 8, !tbaa !41
  %53 = fcmp oeq double %52, 2.000000e+00
  br i1 %53, label %54, label %62

54:                                               ; preds = %49
  %55 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %56 = load double, ptr %55, align 8, !tbaa !41
  %57 = fcmp oeq double %56, 4.000000e+00
  br i1 %57, label %58, label %62

58:                                               ; preds = %54
  %59 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %60 = load double, ptr %59, align 8, !tbaa !41
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
  br i1 %68, label %69, label %36, !llvm.loop !181

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !41
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !41
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !41
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !41
  br label %284

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !41
  %82 = load double, ptr %35, align 8, !tbaa !41
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !41
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4416
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !41
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !41
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !41
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !41
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !41
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !41
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !41
  %99 = load double, ptr %80, align 8, !tbaa !41
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !41
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %215

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %152

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 6216
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
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 4160
  %125 = load <8 x double>, ptr %124, align 64, !tbaa !26
  %126 = fmul <8 x double> %123, %125
  %127 = fadd <8 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 128
  %131 = load <8 x double>, ptr %130, align 64, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 4160
  %133 = load <8 x double>, ptr %132, align 64, !tbaa !26
  %134 = fmul <8 x double> %131, %133
  %135 = fadd <8 x double> %127, %134
  %136 = add nuw nsw i64 %119, 2
  %137 = add i64 %120, 2
  %138 = icmp eq i64 %137, %116
  br i1 %138, label %139, label %117, !llvm.loop !182

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
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 4160
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
  %172 = load double, ptr %171, align 8, !tbaa !41
  %173 = fmul double %172, %169
  %174 = fdiv double %173, %30
  %175 = fcmp ogt double %174, 0.000000e+00
  %176 = fneg double %174
  %177 = select i1 %175, double %176, double -0.000000e+00
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %179 = getelementptr inbounds double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !41
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
  store double %212, ptr %214, align 8, !tbaa !41
  br label %215

215:                                              ; preds = %79, %152
  %216 = fcmp une double %99, %103
  br i1 %216, label %217, label %256

217:                                              ; preds = %215
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %219 = getelementptr inbounds double, ptr %218, i64 %10
  store double %99, ptr %219, align 8, !tbaa !41
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %221 = getelementptr inbounds double, ptr %220, i64 %10
  store double %82, ptr %221, align 8, !tbaa !41
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %223 = getelementptr inbounds double, ptr %222, i64 %10
  %224 = load double, ptr %223, align 8, !tbaa !41
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %226 = getelementptr inbounds double, ptr %225, i64 %10
  store double %224, ptr %226, align 8, !tbaa !41
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %228 = getelementptr inbounds i64, ptr %227, i64 %10
  store i64 -1, ptr %228, align 8, !tbaa !30
  %229 = fcmp oeq double %99, 0.000000e+00
  %230 = fcmp oeq double %99, 3.000000e+00
  %231 = or i1 %229, %230
  br i1 %231, label %232, label %240

232:                                              ; preds = %217
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %234 = getelementptr inbounds double, ptr %233, i64 %10
  store double %30, ptr %234, align 8, !tbaa !41
  store double %30, ptr %26, align 8, !tbaa !41
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %236 = getelementptr inbounds double, ptr %235, i64 %10
  %237 = load double, ptr %236, align 8, !tbaa !41
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %239 = getelementptr inbounds double, ptr %238, i64 %10
  store double %237, ptr %239, align 8, !tbaa !41
  br label %240

240:                                              ; preds = %217, %232
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %242 = load i64, ptr %241, align 8, !tbaa !20
  %243 = icmp sgt i64 %242, 0
  br i1 %243, label %244, label %256

244:                                              ; preds = %240
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %246 = load ptr, ptr %245, align 8, !tbaa !28
  %247 = getelementptr i64, ptr %246, i64 %10
  %248 = sext i1 %230 to i64
  br label %249

249:                                              ; preds = %244, %249
  %250 = phi i64 [ 0, %244 ], [ %253, %249 ]
  %251 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 42
  store i64 -1, ptr %251, align 8, !tbaa !30
  %252 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 43
  store i64 %248, ptr %252, align 8, !tbaa !30
  %253 = add nuw nsw i64 %250, 1
  %254 = load i64, ptr %241, align 8, !tbaa !20
  %255 = icmp slt i64 %253, %254
  br i1 %255, label %249, label %256, !llvm.loop !183

256:                                              ; preds = %249, %240, %215
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
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
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 5632
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
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 5760
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
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2368, !6, i64 2376, !6, i64 2384, !6, i64 2392, !6, i64 2400, !6, i64 2408, !7, i64 2432, !7, i64 2496, !7, i64 2880, !7, i64 3264, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6080, !7, i64 6144, !11, i64 6208, !19, i64 6216}
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
!28 = !{!17, !19, i64 6216}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 8512}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3840, !7, i64 4736, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !7, i64 7552, !7, i64 7616, !7, i64 7680, !7, i64 7744, !7, i64 7808, !34, i64 7872, !7, i64 8256, !7, i64 8320, !7, i64 8384, !7, i64 8448, !6, i64 8512, !7, i64 8520, !11, i64 8584, !11, i64 8592, !11, i64 8600, !11, i64 8608, !11, i64 8616, !11, i64 8624, !11, i64 8632, !11, i64 8640, !11, i64 8648, !11, i64 8656, !11, i64 8664, !11, i64 8672, !11, i64 8680, !11, i64 8688, !11, i64 8696, !11, i64 8704, !11, i64 8712, !11, i64 8720, !11, i64 8728, !11, i64 8736, !11, i64 8744, !11, i64 8752, !11, i64 8760, !11, i64 8768}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320}
!35 = !{!11, !11, i64 0}
!36 = !{!32, !11, i64 8696}
!37 = !{!17, !11, i64 6208}
!38 = !{!5, !6, i64 0}
!39 = !{!5, !6, i64 184}
!40 = !{!5, !6, i64 192}
!41 = !{!9, !9, i64 0}
!42 = !{!5, !10, i64 216}
!43 = !{!5, !6, i64 40}
!44 = !{!5, !10, i64 200}
!45 = !{!5, !10, i64 208}
!46 = !{!32, !11, i64 8592}
!47 = !{!32, !11, i64 8624}
!48 = !{!32, !11, i64 8680}
!49 = !{!32, !11, i64 8760}
!50 = !{!32, !11, i64 8712}
!51 = distinct !{!51, !52}
!52 = !{!"llvm.loop.mustprogress"}
!53 = distinct !{!53, !52}
!54 = distinct !{!54, !52}
!55 = distinct !{!55, !52}
!56 = distinct !{!56, !52}
!57 = !{!32, !11, i64 8600}
!58 = !{!32, !11, i64 8584}
!59 = !{!32, !11, i64 8608}
!60 = !{!32, !11, i64 8768}
!61 = distinct !{!61, !52}
!62 = !{!32, !11, i64 8720}
!63 = !{!32, !11, i64 8728}
!64 = distinct !{!64, !52}
!65 = !{!32, !11, i64 8616}
!66 = distinct !{!66, !52}
!67 = !{!68}
!68 = distinct !{!68, !69, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!69 = distinct !{!69, !"_ZL4stirRK5GroupRK5Piece"}
!70 = !{!71}
!71 = distinct !{!71, !72, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!72 = distinct !{!72, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!73 = !{!32, !11, i64 8672}
!74 = distinct !{!74, !52}
!75 = distinct !{!75, !52}
!76 = distinct !{!76, !52}
!77 = distinct !{!77, !52}
!78 = distinct !{!78, !52}
!79 = distinct !{!79, !52}
!80 = distinct !{!80, !52}
!81 = !{!82}
!82 = distinct !{!82, !83, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!83 = distinct !{!83, !"_ZL4stirRK5GroupRK5Piece"}
!84 = !{!32, !11, i64 8648}
!85 = !{!32, !11, i64 8656}
!86 = !{!32, !11, i64 8664}
!87 = !{!32, !11, i64 8632}
!88 = !{!32, !11, i64 8640}
!89 = distinct !{!89, !52}
!90 = distinct !{!90, !52}
!91 = !{!32, !11, i64 8752}
!92 = distinct !{!92, !52}
!93 = !{!32, !11, i64 8736}
!94 = !{!32, !11, i64 8744}
!95 = distinct !{!95, !52}
!96 = distinct !{!96, !52}
!97 = distinct !{!97, !52}
!98 = distinct !{!98, !52}
!99 = !{!100}
!100 = distinct !{!100, !101, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!101 = distinct !{!101, !"_ZL9evaporateR5GroupDv8_d"}
!102 = !{!103}
!103 = distinct !{!103, !104, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!104 = distinct !{!104, !"_ZL7outflowRK5GroupDv8_dS2_"}
!105 = !{!106}
!106 = distinct !{!106, !107, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!107 = distinct !{!107, !"_ZL8condenseR5GroupDv8_d"}
!108 = distinct !{!108, !52}
!109 = !{!110, !100}
!110 = distinct !{!110, !111, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!111 = distinct !{!111, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!112 = !{!113, !110, !100}
!113 = distinct !{!113, !114, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x: argument 0"}
!114 = distinct !{!114, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x"}
!115 = distinct !{!115, !52}
!116 = distinct !{!116, !52}
!117 = !{!118}
!118 = distinct !{!118, !119, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!119 = distinct !{!119, !"_ZL9evaporateR5GroupDv8_d"}
!120 = !{!121, !118}
!121 = distinct !{!121, !122, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!122 = distinct !{!122, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!123 = !{!124, !121, !118}
!124 = distinct !{!124, !125, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x: argument 0"}
!125 = distinct !{!125, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x"}
!126 = distinct !{!126, !52}
!127 = distinct !{!127, !52}
!128 = !{!32, !11, i64 8704}
!129 = distinct !{!129, !52}
!130 = distinct !{!130, !52}
!131 = distinct !{!131, !52}
!132 = !{!133}
!133 = distinct !{!133, !134, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!134 = distinct !{!134, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!135 = distinct !{!135, !52}
!136 = distinct !{!136, !52}
!137 = distinct !{!137, !52}
!138 = distinct !{!138, !52}
!139 = distinct !{!139, !52}
!140 = !{!32, !11, i64 8688}
!141 = distinct !{!141, !52}
!142 = distinct !{!142, !52}
!143 = distinct !{!143, !52}
!144 = distinct !{!144, !52}
!145 = distinct !{!145, !52}
!146 = distinct !{!146, !52}
!147 = distinct !{!147, !52}
!148 = distinct !{!148, !52}
!149 = distinct !{!149, !52}
!150 = distinct !{!150, !52}
!151 = distinct !{!151, !52}
!152 = distinct !{!152, !52}
!153 = distinct !{!153, !52}
!154 = !{!5, !6, i64 56}
!155 = !{!10, !10, i64 0}
!156 = !{!5, !12, i64 176}
!157 = !{!5, !10, i64 168}
!158 = distinct !{!158, !52}
!159 = distinct !{!159, !160}
!160 = !{!"llvm.loop.unroll.disable"}
!161 = distinct !{!161, !52}
!162 = !{!5, !12, i64 160}
!163 = distinct !{!163, !160}
!164 = !{!5, !10, i64 80}
!165 = !{!5, !12, i64 104}
!166 = distinct !{!166, !52}
!167 = !{!5, !10, i64 72}
!168 = distinct !{!168, !52}
!169 = !{!5, !10, i64 96}
!170 = distinct !{!170, !52}
!171 = distinct !{!171, !160}
!172 = distinct !{!172, !52}
!173 = distinct !{!173, !52}
!174 = distinct !{!174, !52}
!175 = distinct !{!175, !52}
!176 = distinct !{!176, !52}
!177 = distinct !{!177, !52}
!178 = !{!5, !10, i64 88}
!179 = !{!5, !12, i64 112}
!180 = !{!5, !12, i64 120}
!181 = distinct !{!181, !52}
!182 = distinct !{!182, !52}
!183 = distinct !{!183, !52}
