; Made by scripts/lanes.py from sources of sha256 a914d89fe7888f029b37948d37bbbc35dcd42e268cd2200101962708cd0935e2.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <8 x double>], [14 x <8 x double>], [14 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Flash, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }
%struct.Flash = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define i64 @work_space_8(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %3 = load i64, ptr %2, align 8, !tbaa !4
  %4 = mul i64 %3, 18
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %6 = load i64, ptr %5, align 8, !tbaa !13
  %7 = mul i64 %6, 9
  %8 = add i64 %7, %4
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %10 = load i64, ptr %9, align 8, !tbaa !14
  %11 = shl i64 %8, 6
  %12 = add i64 %11, 10752
  %13 = mul i64 %12, %10
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %15 = load i64, ptr %14, align 8, !tbaa !15
  %16 = shl i64 %15, 6
  %17 = add i64 %16, 6336
  %18 = add i64 %17, %13
  ret i64 %18
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind willreturn memory(argmem: readwrite)
declare void @llvm.lifetime.start.p0(i64 immarg, ptr nocapture) #1

; Function Attrs: mustprogress nocallback nofree nosync nounwind willreturn memory(argmem: readwrite)
declare void @llvm.lifetime.end.p0(i64 immarg, ptr nocapture) #1

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define range(i64 0, 2) i64 @march_8(ptr nocapture noundef %0, ptr noundef %1, i64 noundef %2) local_unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = alloca <8 x double>, align 64
  %6 = alloca <8 x double>, align 64
  %7 = alloca <8 x i64>, align 64
  %8 = alloca <8 x double>, align 64
  %9 = alloca <8 x double>, align 64
  %10 = alloca <8 x double>, align 64
  %11 = alloca <8 x double>, align 64
  %12 = alloca <8 x i64>, align 64
  %13 = alloca <8 x i64>, align 64
  %14 = icmp eq i64 %2, 0
  br i1 %14, label %131, label %15

15:                                               ; preds = %3
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %17 = load i64, ptr %16, align 8, !tbaa !14
  %18 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  store i64 %17, ptr %18, align 64, !tbaa !16
  %19 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  store i64 %17, ptr %19, align 8, !tbaa !20
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %21 = load i64, ptr %20, align 8, !tbaa !4
  %22 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  store i64 %21, ptr %22, align 16, !tbaa !21
  %23 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %24 = load i64, ptr %23, align 8, !tbaa !13
  %25 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  store i64 %24, ptr %25, align 8, !tbaa !22
  %26 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %27 = load i64, ptr %26, align 8, !tbaa !23
  %28 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  store i64 %27, ptr %28, align 32, !tbaa !24
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %30 = load double, ptr %29, align 8, !tbaa !25
  %31 = insertelement <8 x double> poison, double %30, i64 0
  %32 = shufflevector <8 x double> %31, <8 x double> poison, <8 x i32> zeroinitializer
  %33 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store <8 x double> %32, ptr %33, align 64, !tbaa !26
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 2344
  store i64 0, ptr %34, align 8, !tbaa !27
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 6152
  store ptr %35, ptr %36, align 8, !tbaa !28
  %37 = getelementptr inbounds %struct.Piece, ptr %35, i64 %17
  %38 = icmp sgt i64 %17, 0
  br i1 %38, label %39, label %113

39:                                               ; preds = %15
  %40 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %41 = add nsw i64 %21, 1
  br label %42

42:                                               ; preds = %42, %39
  %43 = phi ptr [ %37, %39 ], [ %110, %42 ]
  %44 = phi i64 [ 0, %39 ], [ %111, %42 ]
  %45 = load ptr, ptr %36, align 8, !tbaa !28
  %46 = getelementptr inbounds nuw %struct.Piece, ptr %45, i64 %44
  %47 = load ptr, ptr %40, align 8, !tbaa !29
  %48 = getelementptr inbounds nuw i64, ptr %47, i64 %44
  %49 = load i64, ptr %48, align 8, !tbaa !30
  %50 = getelementptr inbounds nuw i8, ptr %46, i64 8512
  store i64 %49, ptr %50, align 64, !tbaa !31
  %51 = getelementptr inbounds nuw i8, ptr %46, i64 8520
  %52 = getelementptr inbounds nuw i8, ptr %46, i64 8528
  %53 = getelementptr inbounds nuw i8, ptr %46, i64 8536
  %54 = getelementptr inbounds nuw i8, ptr %46, i64 8544
  %55 = getelementptr inbounds nuw i8, ptr %46, i64 8552
  %56 = getelementptr inbounds nuw i8, ptr %46, i64 8560
  %57 = getelementptr inbounds nuw i8, ptr %46, i64 8568
  %58 = getelementptr inbounds nuw i8, ptr %46, i64 8576
  %59 = getelementptr inbounds nuw i8, ptr %46, i64 8584
  %60 = getelementptr inbounds nuw i8, ptr %46, i64 8592
  %61 = getelementptr inbounds nuw i8, ptr %46, i64 8600
  %62 = getelementptr inbounds nuw i8, ptr %46, i64 8608
  %63 = getelementptr inbounds nuw i8, ptr %46, i64 8616
  %64 = getelementptr inbounds nuw i8, ptr %46, i64 8624
  store ptr %43, ptr %51, align 8, !tbaa !35
  %65 = getelementptr inbounds <8 x double>, ptr %43, i64 %21
  store ptr %65, ptr %52, align 8, !tbaa !35
  %66 = getelementptr inbounds <8 x double>, ptr %65, i64 %21
  store ptr %66, ptr %53, align 8, !tbaa !35
  %67 = getelementptr inbounds <8 x double>, ptr %66, i64 %21
  store ptr %67, ptr %54, align 8, !tbaa !35
  %68 = getelementptr inbounds <8 x double>, ptr %67, i64 %21
  store ptr %68, ptr %55, align 8, !tbaa !35
  %69 = getelementptr inbounds <8 x double>, ptr %68, i64 %21
  store ptr %69, ptr %56, align 8, !tbaa !35
  %70 = getelementptr inbounds <8 x double>, ptr %69, i64 %21
  store ptr %70, ptr %57, align 8, !tbaa !35
  %71 = getelementptr inbounds <8 x double>, ptr %70, i64 %21
  store ptr %71, ptr %58, align 8, !tbaa !35
  %72 = getelementptr inbounds <8 x double>, ptr %71, i64 %21
  store ptr %72, ptr %59, align 8, !tbaa !35
  %73 = getelementptr inbounds <8 x double>, ptr %72, i64 %21
  store ptr %73, ptr %60, align 8, !tbaa !35
  %74 = getelementptr inbounds <8 x double>, ptr %73, i64 %21
  store ptr %74, ptr %61, align 8, !tbaa !35
  %75 = getelementptr inbounds <8 x double>, ptr %74, i64 %21
  store ptr %75, ptr %62, align 8, !tbaa !35
  %76 = getelementptr inbounds <8 x double>, ptr %75, i64 %21
  store ptr %76, ptr %63, align 8, !tbaa !35
  %77 = getelementptr inbounds <8 x double>, ptr %76, i64 %21
  store ptr %77, ptr %64, align 8, !tbaa !35
  %78 = getelementptr inbounds <8 x double>, ptr %77, i64 %21
  %79 = getelementptr inbounds nuw i8, ptr %46, i64 8632
  store ptr %78, ptr %79, align 8, !tbaa !36
  %80 = icmp eq i64 %49, 0
  %81 = select i1 %80, i64 0, i64 2
  %82 = shl i64 %41, %81
  %83 = getelementptr inbounds <8 x double>, ptr %78, i64 %82
  %84 = getelementptr inbounds nuw i8, ptr %46, i64 8640
  %85 = getelementptr inbounds nuw i8, ptr %46, i64 8648
  %86 = getelementptr inbounds nuw i8, ptr %46, i64 8656
  %87 = getelementptr inbounds nuw i8, ptr %46, i64 8664
  %88 = getelementptr inbounds nuw i8, ptr %46, i64 8672
  %89 = getelementptr inbounds nuw i8, ptr %46, i64 8680
  %90 = getelementptr inbounds nuw i8, ptr %46, i64 8688
  %91 = getelementptr inbounds nuw i8, ptr %46, i64 8696
  %92 = getelementptr inbounds nuw i8, ptr %46, i64 8704
  store ptr %83, ptr %84, align 8, !tbaa !35
  %93 = getelementptr <8 x double>, ptr %83, i64 %24
  %94 = getelementptr i8, ptr %93, i64 64
  store ptr %94, ptr %85, align 8, !tbaa !35
  %95 = getelementptr <8 x double>, ptr %94, i64 %24
  %96 = getelementptr i8, ptr %95, i64 64
  store ptr %96, ptr %86, align 8, !tbaa !35
  %97 = getelementptr <8 x double>, ptr %96, i64 %24
  %98 = getelementptr i8, ptr %97, i64 64
  store ptr %98, ptr %87, align 8, !tbaa !35
  %99 = getelementptr <8 x double>, ptr %98, i64 %24
  %100 = getelementptr i8, ptr %99, i64 64
  store ptr %100, ptr %88, align 8, !tbaa !35
  %101 = getelementptr <8 x double>, ptr %100, i64 %24
  %102 = getelementptr i8, ptr %101, i64 64
  store ptr %102, ptr %89, align 8, !tbaa !35
  %103 = getelementptr <8 x double>, ptr %102, i64 %24
  %104 = getelementptr i8, ptr %103, i64 64
  store ptr %104, ptr %90, align 8, !tbaa !35
  %105 = getelementptr <8 x double>, ptr %104, i64 %24
  %106 = getelementptr i8, ptr %105, i64 64
  store ptr %106, ptr %91, align 8, !tbaa !35
  %107 = getelementptr <8 x double>, ptr %106, i64 %24
  %108 = getelementptr i8, ptr %107, i64 64
  store ptr %108, ptr %92, align 8, !tbaa !35
  %109 = getelementptr <8 x double>, ptr %108, i64 %24
  %110 = getelementptr i8, ptr %109, i64 64
  %111 = add nuw nsw i64 %44, 1
  %112 = icmp eq i64 %111, %17
  br i1 %112, label %113, label %42, !llvm.loop !37

113:                                              ; preds = %42, %15
  %114 = phi ptr [ %37, %15 ], [ %110, %42 ]
  %115 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  store ptr %114, ptr %115, align 64, !tbaa !39
  %116 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %117 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  br label %118

118:                                              ; preds = %113, %128
  %119 = phi i64 [ 0, %113 ], [ %129, %128 ]
  %120 = load i64, ptr %34, align 8, !tbaa !27
  %121 = load i64, ptr %0, align 8, !tbaa !40
  %122 = icmp slt i64 %120, %121
  %123 = trunc nuw nsw i64 %119 to i32
  br i1 %122, label %124, label %125

124:                                              ; preds = %118
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123) #6
  br label %128

125:                                              ; preds = %118
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123) #6
  %126 = getelementptr inbounds nuw i64, ptr %116, i64 %119
  store i64 0, ptr %126, align 8, !tbaa !30
  %127 = getelementptr inbounds nuw i64, ptr %117, i64 %119
  store i64 0, ptr %127, align 8, !tbaa !30
  br label %128

128:                                              ; preds = %125, %124
  %129 = add nuw nsw i64 %119, 1
  %130 = icmp eq i64 %129, 8
  br i1 %130, label %131, label %118, !llvm.loop !41

131:                                              ; preds = %128, %3
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %135 = load i64, ptr %133, align 8, !tbaa !42
  %136 = load i64, ptr %134, align 8, !tbaa !43
  %137 = sub nsw i64 %135, %136
  %138 = icmp slt i64 %137, 16
  br i1 %138, label %5834, label %139

139:                                              ; preds = %131
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 6080
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %144 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 6152
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 2344
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %191 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %193 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %194 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %240 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %242 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %243 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %244 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 6016
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %276 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %277 = getelementptr inbounds nuw i8, ptr %1, i64 6088
  %278 = getelementptr inbounds nuw i8, ptr %1, i64 6096
  %279 = getelementptr inbounds nuw i8, ptr %1, i64 6104
  %280 = getelementptr inbounds nuw i8, ptr %1, i64 6112
  %281 = getelementptr inbounds nuw i8, ptr %1, i64 6120
  %282 = getelementptr inbounds nuw i8, ptr %1, i64 6128
  %283 = getelementptr inbounds nuw i8, ptr %1, i64 6136
  br label %284

284:                                              ; preds = %545, %139
  %285 = phi i64 [ 0, %139 ], [ %546, %545 ]
  %286 = phi i1 [ true, %139 ], [ %547, %545 ]
  %287 = getelementptr inbounds nuw i64, ptr %132, i64 %285
  %288 = load i64, ptr %287, align 8, !tbaa !30
  %289 = icmp eq i64 %288, 0
  br i1 %289, label %541, label %290

290:                                              ; preds = %284
  %291 = getelementptr inbounds nuw [8 x double], ptr %140, i64 0, i64 %285
  %292 = load double, ptr %291, align 8, !tbaa !44
  %293 = fcmp oeq double %292, 0.000000e+00
  br i1 %293, label %541, label %294

294:                                              ; preds = %290
  %295 = load i64, ptr %141, align 16, !tbaa !21
  %296 = load i64, ptr %142, align 8, !tbaa !22
  %297 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %285
  %298 = load i64, ptr %297, align 8, !tbaa !30
  %299 = load ptr, ptr %144, align 8, !tbaa !45
  %300 = mul nsw i64 %298, 40
  %301 = getelementptr inbounds i8, ptr %299, i64 %300
  %302 = getelementptr inbounds nuw double, ptr %145, i64 %285
  %303 = load double, ptr %302, align 8, !tbaa !44
  store double %303, ptr %301, align 8, !tbaa !44
  %304 = getelementptr inbounds nuw double, ptr %146, i64 %285
  %305 = load double, ptr %304, align 8, !tbaa !44
  %306 = getelementptr inbounds nuw i8, ptr %301, i64 8
  store double %305, ptr %306, align 8, !tbaa !44
  %307 = getelementptr inbounds nuw double, ptr %147, i64 %285
  %308 = load double, ptr %307, align 8, !tbaa !44
  %309 = getelementptr inbounds nuw i8, ptr %301, i64 16
  store double %308, ptr %309, align 8, !tbaa !44
  %310 = getelementptr inbounds nuw double, ptr %148, i64 %285
  %311 = load double, ptr %310, align 8, !tbaa !44
  %312 = getelementptr inbounds nuw i8, ptr %301, i64 24
  store double %311, ptr %312, align 8, !tbaa !44
  %313 = getelementptr inbounds nuw double, ptr %149, i64 %285
  %314 = load double, ptr %313, align 8, !tbaa !44
  %315 = getelementptr inbounds nuw i8, ptr %301, i64 32
  store double %314, ptr %315, align 8, !tbaa !44
  %316 = load i64, ptr %150, align 64, !tbaa !16
  %317 = icmp sgt i64 %316, 0
  br i1 %317, label %318, label %525

318:                                              ; preds = %294
  %319 = load ptr, ptr %151, align 8, !tbaa !28
  %320 = load ptr, ptr %152, align 8, !tbaa !46
  %321 = mul nsw i64 %316, %298
  %322 = mul i64 %295, 3
  %323 = load ptr, ptr %153, align 8, !tbaa !47
  %324 = icmp sgt i64 %295, 0
  %325 = getelementptr inbounds nuw double, ptr %10, i64 %285
  %326 = shl i64 %295, 4
  %327 = getelementptr inbounds nuw double, ptr %11, i64 %285
  %328 = icmp sgt i64 %296, 0
  %329 = and i64 %296, 1
  %330 = icmp eq i64 %296, 1
  %331 = and i64 %296, 9223372036854775806
  %332 = icmp eq i64 %329, 0
  br label %333

333:                                              ; preds = %433, %318
  %334 = phi i64 [ 0, %318 ], [ %500, %433 ]
  %335 = getelementptr inbounds nuw %struct.Piece, ptr %319, i64 %334
  %336 = getelementptr inbounds nuw i8, ptr %335, i64 1536
  %337 = getelementptr inbounds nuw double, ptr %336, i64 %285
  %338 = load double, ptr %337, align 8, !tbaa !44
  %339 = getelementptr inbounds nuw i8, ptr %335, i64 4608
  %340 = getelementptr inbounds nuw double, ptr %339, i64 %285
  %341 = load double, ptr %340, align 8, !tbaa !44
  %342 = add nsw i64 %334, %321
  %343 = mul i64 %322, %342
  %344 = getelementptr inbounds double, ptr %320, i64 %343
  %345 = mul nsw i64 %342, 40
  %346 = getelementptr inbounds i8, ptr %323, i64 %345
  br i1 %324, label %347, label %364

347:                                              ; preds = %333
  %348 = getelementptr inbounds nuw i8, ptr %335, i64 8528
  %349 = load ptr, ptr %348, align 16, !tbaa !48
  %350 = getelementptr inbounds nuw i8, ptr %335, i64 8560
  %351 = load ptr, ptr %350, align 16, !tbaa !49
  %352 = getelementptr double, ptr %351, i64 %285
  %353 = getelementptr double, ptr %344, i64 %295
  %354 = getelementptr inbounds nuw i8, ptr %335, i64 8616
  %355 = load ptr, ptr %354, align 8, !tbaa !50
  %356 = getelementptr inbounds nuw i8, ptr %335, i64 8512
  %357 = load i64, ptr %356, align 64, !tbaa !31
  %358 = getelementptr inbounds nuw i8, ptr %335, i64 4672
  %359 = getelementptr inbounds nuw i8, ptr %335, i64 384
  %360 = getelementptr inbounds nuw i8, ptr %335, i64 448
  %361 = getelementptr inbounds nuw i8, ptr %335, i64 512
  %362 = getelementptr inbounds nuw i8, ptr %335, i64 640
  %363 = getelementptr i8, ptr %344, i64 %326
  br label %377

364:                                              ; preds = %408, %333
  %365 = phi double [ %341, %333 ], [ %416, %408 ]
  br i1 %328, label %366, label %433

366:                                              ; preds = %364
  %367 = getelementptr inbounds nuw i8, ptr %335, i64 8696
  %368 = load ptr, ptr %367, align 8, !tbaa !51
  %369 = getelementptr double, ptr %368, i64 %285
  %370 = getelementptr inbounds nuw i8, ptr %335, i64 768
  %371 = getelementptr inbounds nuw double, ptr %370, i64 %285
  %372 = load double, ptr %371, align 8, !tbaa !44
  %373 = getelementptr inbounds nuw i8, ptr %335, i64 8648
  %374 = load ptr, ptr %373, align 8, !tbaa !52
  %375 = getelementptr double, ptr %374, i64 %285
  %376 = load double, ptr %369, align 8, !tbaa !44
  br i1 %330, label %419, label %502

377:                                              ; preds = %408, %347
  %378 = phi double [ %341, %347 ], [ %416, %408 ]
  %379 = phi i64 [ 0, %347 ], [ %417, %408 ]
  %380 = getelementptr inbounds nuw <8 x double>, ptr %349, i64 %379
  %381 = getelementptr inbounds nuw double, ptr %380, i64 %285
  %382 = load double, ptr %381, align 8, !tbaa !44
  %383 = getelementptr inbounds nuw double, ptr %344, i64 %379
  store double %382, ptr %383, align 8, !tbaa !44
  %384 = getelementptr <8 x double>, ptr %352, i64 %379
  %385 = load double, ptr %384, align 8, !tbaa !44
  %386 = getelementptr double, ptr %353, i64 %379
  store double %385, ptr %386, align 8, !tbaa !44
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %387 = getelementptr inbounds nuw <8 x double>, ptr %355, i64 %379
  %388 = load <8 x double>, ptr %387, align 64, !tbaa !26
  %389 = icmp slt i64 %379, %357
  br i1 %389, label %390, label %395

390:                                              ; preds = %377
  %391 = load <8 x double>, ptr %336, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %392 = load <8 x double>, ptr %380, align 64, !tbaa !26
  %393 = load <8 x double>, ptr %362, align 64, !tbaa !26
  %394 = fmul <8 x double> %392, %393
  br label %408

395:                                              ; preds = %377
  %396 = load <8 x double>, ptr %358, align 64, !tbaa !26
  %397 = load <8 x double>, ptr %336, align 64, !tbaa !26
  %398 = fsub <8 x double> %396, %397
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %399 = load <8 x double>, ptr %380, align 64, !tbaa !26
  %400 = load <8 x double>, ptr %359, align 64, !tbaa !26
  %401 = load <8 x double>, ptr %360, align 64, !tbaa !26
  %402 = load <8 x double>, ptr %361, align 64, !tbaa !26
  %403 = fmul <8 x double> %399, %402
  %404 = fmul <8 x double> %403, splat (double 0x3FD5555555555555)
  %405 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %401, <8 x double> splat (double 5.000000e-01), <8 x double> %404)
  %406 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %399, <8 x double> %405, <8 x double> %400)
  %407 = fmul <8 x double> %399, %406
  br label %408

408:                                              ; preds = %395, %390
  %409 = phi <8 x double> [ %391, %390 ], [ %398, %395 ]
  %410 = phi <8 x double> [ %394, %390 ], [ %407, %395 ]
  %411 = fmul <8 x double> %388, %409
  store <8 x double> %411, ptr %10, align 64, !tbaa !26
  %412 = fmul <8 x double> %411, %410
  store <8 x double> %412, ptr %11, align 64, !tbaa !26
  %413 = load double, ptr %325, align 8, !tbaa !44
  %414 = getelementptr double, ptr %363, i64 %379
  store double %413, ptr %414, align 8, !tbaa !44
  %415 = load double, ptr %327, align 8, !tbaa !44
  %416 = fadd double %378, %415
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %417 = add nuw nsw i64 %379, 1
  %418 = icmp eq i64 %417, %295
  br i1 %418, label %364, label %377, !llvm.loop !53

419:                                              ; preds = %502, %366
  %420 = phi double [ poison, %366 ], [ %522, %502 ]
  %421 = phi double [ %376, %366 ], [ %517, %502 ]
  %422 = phi double [ %365, %366 ], [ %522, %502 ]
  %423 = phi i64 [ 0, %366 ], [ %515, %502 ]
  br i1 %332, label %433, label %424

424:                                              ; preds = %419
  %425 = getelementptr <8 x double>, ptr %369, i64 %423
  %426 = getelementptr i8, ptr %425, i64 64
  %427 = load double, ptr %426, align 8, !tbaa !44
  %428 = fsub double %427, %421
  %429 = fmul double %372, %428
  %430 = getelementptr <8 x double>, ptr %375, i64 %423
  %431 = load double, ptr %430, align 8, !tbaa !44
  %432 = tail call double @llvm.fmuladd.f64(double %429, double %431, double %422)
  br label %433

433:                                              ; preds = %424, %419, %364
  %434 = phi double [ %365, %364 ], [ %420, %419 ], [ %432, %424 ]
  %435 = getelementptr inbounds nuw i8, ptr %335, i64 960
  %436 = getelementptr inbounds nuw double, ptr %435, i64 %285
  %437 = load double, ptr %436, align 8, !tbaa !44
  %438 = getelementptr inbounds nuw i8, ptr %335, i64 384
  %439 = getelementptr inbounds nuw double, ptr %438, i64 %285
  %440 = load double, ptr %439, align 8, !tbaa !44
  %441 = getelementptr inbounds nuw i8, ptr %335, i64 448
  %442 = getelementptr inbounds nuw double, ptr %441, i64 %285
  %443 = load double, ptr %442, align 8, !tbaa !44
  %444 = getelementptr inbounds nuw i8, ptr %335, i64 512
  %445 = getelementptr inbounds nuw double, ptr %444, i64 %285
  %446 = load double, ptr %445, align 8, !tbaa !44
  %447 = fmul double %437, %446
  %448 = fdiv double %447, 3.000000e+00
  %449 = tail call double @llvm.fmuladd.f64(double %443, double 5.000000e-01, double %448)
  %450 = tail call double @llvm.fmuladd.f64(double %437, double %449, double %440)
  %451 = fmul double %437, %450
  %452 = getelementptr inbounds nuw i8, ptr %335, i64 1408
  %453 = getelementptr inbounds nuw double, ptr %452, i64 %285
  %454 = load double, ptr %453, align 8, !tbaa !44
  %455 = fsub double %454, %338
  %456 = getelementptr inbounds nuw i8, ptr %335, i64 640
  %457 = getelementptr inbounds nuw double, ptr %456, i64 %285
  %458 = load double, ptr %457, align 8, !tbaa !44
  %459 = fmul double %338, %458
  %460 = fmul double %437, %459
  %461 = tail call double @llvm.fmuladd.f64(double %455, double %451, double %460)
  %462 = getelementptr inbounds nuw i8, ptr %335, i64 4224
  %463 = getelementptr inbounds nuw double, ptr %462, i64 %285
  %464 = load double, ptr %463, align 8, !tbaa !44
  %465 = getelementptr inbounds nuw i8, ptr %335, i64 4288
  %466 = getelementptr inbounds nuw double, ptr %465, i64 %285
  %467 = load double, ptr %466, align 8, !tbaa !44
  %468 = fsub double %464, %467
  %469 = fsub double %434, %461
  %470 = fsub double %468, %469
  %471 = fcmp ogt double %464, 0.000000e+00
  %472 = fneg double %464
  %473 = select i1 %471, double %464, double %472
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
  store double %483, ptr %346, align 8, !tbaa !44
  %484 = getelementptr inbounds nuw i8, ptr %335, i64 4160
  %485 = getelementptr inbounds nuw double, ptr %484, i64 %285
  %486 = load double, ptr %485, align 8, !tbaa !44
  %487 = getelementptr inbounds nuw i8, ptr %346, i64 8
  store double %486, ptr %487, align 8, !tbaa !44
  %488 = getelementptr inbounds nuw i8, ptr %335, i64 3968
  %489 = getelementptr inbounds nuw double, ptr %488, i64 %285
  %490 = load double, ptr %489, align 8, !tbaa !44
  %491 = getelementptr inbounds nuw i8, ptr %346, i64 16
  store double %490, ptr %491, align 8, !tbaa !44
  %492 = getelementptr inbounds nuw i8, ptr %335, i64 4032
  %493 = getelementptr inbounds nuw double, ptr %492, i64 %285
  %494 = load double, ptr %493, align 8, !tbaa !44
  %495 = getelementptr inbounds nuw i8, ptr %346, i64 24
  store double %494, ptr %495, align 8, !tbaa !44
  %496 = getelementptr inbounds nuw i8, ptr %335, i64 3904
  %497 = getelementptr inbounds nuw double, ptr %496, i64 %285
  %498 = load double, ptr %497, align 8, !tbaa !44
  %499 = getelementptr inbounds nuw i8, ptr %346, i64 32
  store double %498, ptr %499, align 8, !tbaa !44
  %500 = add nuw nsw i64 %334, 1
  %501 = icmp eq i64 %500, %316
  br i1 %501, label %525, label %333, !llvm.loop !54

502:                                              ; preds = %366, %502
  %503 = phi double [ %517, %502 ], [ %376, %366 ]
  %504 = phi double [ %522, %502 ], [ %365, %366 ]
  %505 = phi i64 [ %515, %502 ], [ 0, %366 ]
  %506 = phi i64 [ %523, %502 ], [ 0, %366 ]
  %507 = or disjoint i64 %505, 1
  %508 = getelementptr <8 x double>, ptr %369, i64 %507
  %509 = load double, ptr %508, align 8, !tbaa !44
  %510 = fsub double %509, %503
  %511 = fmul double %372, %510
  %512 = getelementptr <8 x double>, ptr %375, i64 %505
  %513 = load double, ptr %512, align 8, !tbaa !44
  %514 = tail call double @llvm.fmuladd.f64(double %511, double %513, double %504)
  %515 = add nuw nsw i64 %505, 2
  %516 = getelementptr <8 x double>, ptr %369, i64 %515
  %517 = load double, ptr %516, align 8, !tbaa !44
  %518 = fsub double %517, %509
  %519 = fmul double %372, %518
  %520 = getelementptr <8 x double>, ptr %375, i64 %507
  %521 = load double, ptr %520, align 8, !tbaa !44
  %522 = tail call double @llvm.fmuladd.f64(double %519, double %521, double %514)
  %523 = add i64 %506, 2
  %524 = icmp eq i64 %523, %331
  br i1 %524, label %419, label %502, !llvm.loop !55

525:                                              ; preds = %433, %294
  %526 = load i64, ptr %154, align 8, !tbaa !27
  %527 = load i64, ptr %0, align 8, !tbaa !40
  %528 = icmp slt i64 %526, %527
  br i1 %528, label %531, label %529

529:                                              ; preds = %525
  store i64 0, ptr %287, align 8, !tbaa !30
  %530 = getelementptr inbounds nuw i64, ptr %155, i64 %285
  store i64 0, ptr %530, align 8, !tbaa !30
  br label %538

531:                                              ; preds = %525
  %532 = trunc nuw nsw i64 %285 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %532) #6
  %533 = load i64, ptr %287, align 8, !tbaa !30
  %534 = icmp eq i64 %533, 0
  br i1 %534, label %538, label %535

535:                                              ; preds = %531
  %536 = load double, ptr %291, align 8, !tbaa !44
  %537 = fcmp oeq double %536, 0.000000e+00
  br label %538

538:                                              ; preds = %529, %535, %531
  %539 = phi i1 [ true, %531 ], [ %537, %535 ], [ true, %529 ]
  %540 = and i1 %286, %539
  br label %541

541:                                              ; preds = %538, %290, %284
  %542 = phi i1 [ %286, %290 ], [ %540, %538 ], [ %286, %284 ]
  %543 = add nuw nsw i64 %285, 1
  %544 = icmp eq i64 %543, 8
  br i1 %544, label %548, label %545

545:                                              ; preds = %541, %549
  %546 = phi i64 [ %543, %541 ], [ 0, %549 ]
  %547 = phi i1 [ %542, %541 ], [ true, %549 ]
  br label %284, !llvm.loop !56

548:                                              ; preds = %541
  br i1 %542, label %554, label %549

549:                                              ; preds = %5791, %5833, %5830, %3974, %4301, %548
  %550 = load i64, ptr %133, align 8, !tbaa !42
  %551 = load i64, ptr %134, align 8, !tbaa !43
  %552 = sub nsw i64 %550, %551
  %553 = icmp slt i64 %552, 16
  br i1 %553, label %5834, label %545

554:                                              ; preds = %548
  %555 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %556 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %555)
  %557 = icmp eq i64 %556, 0
  br i1 %557, label %5834, label %558

558:                                              ; preds = %554
  %559 = load <8 x i64>, ptr %155, align 64, !tbaa !26
  %560 = and <8 x i64> %559, %555
  %561 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %560)
  %562 = icmp eq i64 %561, 0
  %563 = load i64, ptr %178, align 8, !tbaa !20
  br i1 %562, label %1518, label %564

564:                                              ; preds = %558
  %565 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %566 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %567 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %568 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %569 = fsub <8 x double> %567, %568
  %570 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %566, <8 x double> %569, <8 x double> %565)
  %571 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %572 = fcmp une <8 x double> %571, splat (double 2.000000e+00)
  %573 = select <8 x i1> %572, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %574 = fmul <8 x double> %570, %573
  %575 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %576 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %577 = fcmp olt <8 x double> %575, %576
  %578 = select <8 x i1> %577, <8 x double> %575, <8 x double> %576
  %579 = fcmp olt <8 x double> %578, %574
  %580 = select <8 x i1> %579, <8 x double> %578, <8 x double> %574
  %581 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %582 = fmul <8 x double> %581, splat (double 5.000000e-01)
  %583 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %584 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %585 = fneg <8 x double> %582
  %586 = icmp eq <8 x i64> %584, zeroinitializer
  %587 = select <8 x i1> %586, <8 x double> %585, <8 x double> %582
  %588 = fadd <8 x double> %583, %587
  %589 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %590 = fsub <8 x double> %588, %589
  %591 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %592 = select <8 x i1> %586, <8 x double> zeroinitializer, <8 x double> %591
  %593 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %594 = fsub <8 x double> %592, %593
  %595 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %596 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %597 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %598 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %597, <8 x double> %589, <8 x double> %596)
  %599 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %600 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %595, <8 x double> %598, <8 x double> %599)
  %601 = fdiv <8 x double> %594, %600
  %602 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %603 = fsub <8 x double> %589, %602
  %604 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %605 = fdiv <8 x double> %603, %604
  %606 = fsub <8 x double> %601, %605
  %607 = fdiv <8 x double> %606, %604
  %608 = fdiv <8 x double> %590, %601
  %609 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %610 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %611 = or <8 x i64> %610, %609
  %612 = icmp eq <8 x i64> %611, zeroinitializer
  %613 = select <8 x i1> %612, <8 x double> %607, <8 x double> zeroinitializer
  %614 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %613, <8 x double> %608, <8 x double> %601)
  %615 = fdiv <8 x double> %590, %614
  %616 = fcmp ule <8 x double> %615, zeroinitializer
  %617 = select <8 x i1> %616, <8 x double> %608, <8 x double> %615
  %618 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %619 = fcmp une <8 x double> %618, zeroinitializer
  %620 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %621 = fcmp une <8 x double> %620, zeroinitializer
  %622 = fcmp ule <8 x double> %591, zeroinitializer
  %623 = or <8 x i1> %622, %619
  %624 = fcmp ule <8 x double> %608, zeroinitializer
  %625 = or <8 x i1> %624, %623
  %626 = or <8 x i1> %621, %625
  %627 = select <8 x i1> %626, <8 x double> splat (double 1.000000e+09), <8 x double> %617
  %628 = icmp sgt i64 %563, 0
  br i1 %628, label %629, label %694

629:                                              ; preds = %564
  %630 = load ptr, ptr %151, align 8, !tbaa !28
  %631 = fmul <8 x double> %604, splat (double 3.000000e+00)
  br label %632

632:                                              ; preds = %629, %632
  %633 = phi <8 x double> [ %627, %629 ], [ %691, %632 ]
  %634 = phi i64 [ 0, %629 ], [ %692, %632 ]
  %635 = getelementptr inbounds nuw %struct.Piece, ptr %630, i64 %634
  %636 = getelementptr inbounds nuw i8, ptr %635, i64 3904
  %637 = load <8 x double>, ptr %636, align 64, !tbaa !26
  %638 = getelementptr inbounds nuw i8, ptr %635, i64 1472
  %639 = load <8 x double>, ptr %638, align 64, !tbaa !26
  %640 = fsub <8 x double> %637, %639
  %641 = getelementptr inbounds nuw i8, ptr %635, i64 832
  %642 = load <8 x double>, ptr %641, align 64, !tbaa !26
  %643 = fmul <8 x double> %640, %642
  %644 = getelementptr inbounds nuw i8, ptr %635, i64 1600
  %645 = load <8 x double>, ptr %644, align 64, !tbaa !26
  %646 = getelementptr inbounds nuw i8, ptr %635, i64 4160
  %647 = load <8 x double>, ptr %646, align 64, !tbaa !26
  %648 = fsub <8 x double> %645, %647
  %649 = getelementptr inbounds nuw i8, ptr %635, i64 8320
  %650 = load <8 x i64>, ptr %649, align 64, !tbaa !26
  %651 = getelementptr inbounds nuw i8, ptr %635, i64 7680
  %652 = load <8 x double>, ptr %651, align 64, !tbaa !26
  %653 = fcmp une <8 x double> %652, splat (double 1.000000e+00)
  %654 = select <8 x i1> %653, <8 x double> %643, <8 x double> %648
  %655 = getelementptr inbounds nuw i8, ptr %635, i64 3968
  %656 = load <8 x double>, ptr %655, align 64, !tbaa !26
  %657 = icmp eq <8 x i64> %650, zeroinitializer
  %658 = select <8 x i1> %657, <8 x double> %656, <8 x double> %654
  %659 = getelementptr inbounds nuw i8, ptr %635, i64 6016
  %660 = load <8 x double>, ptr %659, align 64, !tbaa !26
  %661 = getelementptr inbounds nuw i8, ptr %635, i64 7552
  %662 = load <8 x double>, ptr %661, align 64, !tbaa !26
  %663 = fdiv <8 x double> %662, %604
  %664 = select <8 x i1> %657, <8 x double> %663, <8 x double> zeroinitializer
  %665 = fsub <8 x double> %660, %664
  %666 = fdiv <8 x double> %658, %665
  %667 = getelementptr inbounds nuw i8, ptr %635, i64 4864
  %668 = load <8 x double>, ptr %667, align 64, !tbaa !26
  %669 = fsub <8 x double> %668, %656
  %670 = fdiv <8 x double> %669, %604
  %671 = getelementptr inbounds nuw i8, ptr %635, i64 8384
  %672 = load <8 x i64>, ptr %671, align 64, !tbaa !26
  %673 = or <8 x i64> %672, %650
  %674 = fcmp ule <8 x double> %666, %631
  %675 = fsub <8 x double> %665, %670
  %676 = icmp eq <8 x i64> %673, zeroinitializer
  %677 = select <8 x i1> %674, <8 x i1> %676, <8 x i1> zeroinitializer
  %678 = select <8 x i1> %677, <8 x double> %675, <8 x double> zeroinitializer
  %679 = fdiv <8 x double> %666, %604
  %680 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %678, <8 x double> %679, <8 x double> %665)
  %681 = fdiv <8 x double> %658, %680
  %682 = fcmp ule <8 x double> %681, zeroinitializer
  %683 = select <8 x i1> %682, <8 x double> %666, <8 x double> %681
  %684 = fcmp ule <8 x double> %658, zeroinitializer
  %685 = fcmp ule <8 x double> %665, zeroinitializer
  %686 = or <8 x i1> %684, %685
  %687 = fcmp ogt <8 x double> %683, splat (double 1.000000e-03)
  %688 = select <8 x i1> %687, <8 x double> %683, <8 x double> splat (double 1.000000e-03)
  %689 = select <8 x i1> %686, <8 x double> splat (double 1.000000e+09), <8 x double> %688
  %690 = fcmp olt <8 x double> %633, %689
  %691 = select <8 x i1> %690, <8 x double> %633, <8 x double> %689
  %692 = add nuw nsw i64 %634, 1
  %693 = icmp eq i64 %692, %563
  br i1 %693, label %694, label %632, !llvm.loop !57

694:                                              ; preds = %632, %564
  %695 = phi <8 x double> [ %627, %564 ], [ %691, %632 ]
  %696 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %697 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %698 = fadd <8 x double> %696, %697
  %699 = fsub <8 x double> %698, %567
  %700 = fmul <8 x double> %695, splat (double 1.050000e+00)
  %701 = fcmp ugt <8 x double> %699, %700
  %702 = select <8 x i1> %701, <8 x double> %695, <8 x double> %699
  %703 = fmul <8 x double> %580, splat (double 0x3FF000010C6F7A0B)
  %704 = fcmp ole <8 x double> %702, %703
  %705 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %706 = fcmp ogt <8 x double> %705, %580
  %707 = select <8 x i1> %706, <8 x double> %705, <8 x double> %580
  %708 = icmp ne <8 x i64> %560, zeroinitializer
  %709 = select <8 x i1> %704, <8 x i1> %708, <8 x i1> zeroinitializer
  %710 = select <8 x i1> %709, <8 x double> %707, <8 x double> %705
  store <8 x double> %710, ptr %181, align 64, !tbaa !26
  %711 = fmul <8 x double> %580, splat (double 2.000000e+00)
  %712 = fcmp uge <8 x double> %702, %711
  %713 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %714 = fcmp une <8 x double> %713, zeroinitializer
  %715 = or <8 x i1> %714, %712
  %716 = fmul <8 x double> %702, splat (double 5.000000e-01)
  %717 = select <8 x i1> %715, <8 x double> %580, <8 x double> %716
  %718 = select <8 x i1> %704, <8 x double> %702, <8 x double> %717
  %719 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %720 = icmp eq <8 x i64> %560, zeroinitializer
  %721 = select <8 x i1> %720, <8 x double> %719, <8 x double> %718
  store <8 x double> %721, ptr %182, align 64, !tbaa !26
  %722 = fdiv <8 x double> %721, %604
  %723 = fdiv <8 x double> splat (double 1.000000e+00), %721
  %724 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %722, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %725 = fadd <8 x double> %722, splat (double 1.000000e+00)
  %726 = fdiv <8 x double> %724, %725
  %727 = fmul <8 x double> %723, %726
  %728 = icmp eq <8 x i64> %609, zeroinitializer
  %729 = select <8 x i1> %728, <8 x double> %727, <8 x double> %723
  %730 = fneg <8 x double> %723
  %731 = fneg <8 x double> %725
  %732 = fmul <8 x double> %723, %731
  %733 = select <8 x i1> %728, <8 x double> %732, <8 x double> %730
  %734 = fmul <8 x double> %722, %722
  %735 = fdiv <8 x double> %734, %725
  %736 = fmul <8 x double> %723, %735
  %737 = select <8 x i1> %728, <8 x double> %736, <8 x double> zeroinitializer
  %738 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %739 = select <8 x i1> %720, <8 x double> %738, <8 x double> %729
  store <8 x double> %739, ptr %184, align 64, !tbaa !26
  %740 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %741 = select <8 x i1> %720, <8 x double> %740, <8 x double> %733
  store <8 x double> %741, ptr %185, align 64, !tbaa !26
  %742 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %743 = select <8 x i1> %720, <8 x double> %742, <8 x double> %737
  store <8 x double> %743, ptr %186, align 64, !tbaa !26
  %744 = select <8 x i1> %728, <8 x double> %722, <8 x double> zeroinitializer
  %745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %744, <8 x double> %603, <8 x double> %589)
  %746 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %747 = select <8 x i1> %720, <8 x double> %746, <8 x double> %745
  %748 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %749 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %750 = fsub <8 x double> %748, %749
  %751 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %744, <8 x double> %750, <8 x double> %748)
  %752 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %753 = select <8 x i1> %720, <8 x double> %752, <8 x double> %751
  store <8 x double> %753, ptr %248, align 64, !tbaa !26
  %754 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %755 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %756 = fsub <8 x double> %754, %755
  %757 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %744, <8 x double> %756, <8 x double> %754)
  %758 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %759 = select <8 x i1> %720, <8 x double> %758, <8 x double> %757
  store <8 x double> %759, ptr %251, align 64, !tbaa !26
  %760 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %761 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %762 = fsub <8 x double> %760, %761
  %763 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %744, <8 x double> %762, <8 x double> %760)
  %764 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %765 = select <8 x i1> %720, <8 x double> %764, <8 x double> %763
  store <8 x double> %765, ptr %254, align 64, !tbaa !26
  %766 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %767 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %768 = fsub <8 x double> %766, %767
  %769 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %744, <8 x double> %768, <8 x double> %766)
  %770 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %771 = select <8 x i1> %720, <8 x double> %770, <8 x double> %769
  store <8 x double> %771, ptr %257, align 64, !tbaa !26
  %772 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %773 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %774 = fsub <8 x double> %772, %773
  %775 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %744, <8 x double> %774, <8 x double> %772)
  %776 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %777 = select <8 x i1> %720, <8 x double> %776, <8 x double> %775
  store <8 x double> %777, ptr %260, align 64, !tbaa !26
  %778 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %779 = icmp eq <8 x i64> %778, zeroinitializer
  %780 = select <8 x i1> %779, <8 x double> zeroinitializer, <8 x double> %591
  %781 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %782 = fsub <8 x double> %780, %781
  %783 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %784 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %597, <8 x double> %783, <8 x double> %596)
  %785 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %595, <8 x double> %784, <8 x double> %599)
  %786 = fdiv <8 x double> %782, %785
  %787 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %788 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %789 = or <8 x i64> %788, %787
  %790 = and <8 x i64> %789, %560
  %791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %721, <8 x double> %786, <8 x double> %783)
  %792 = icmp eq <8 x i64> %790, zeroinitializer
  %793 = select <8 x i1> %621, <8 x i1> splat (i1 true), <8 x i1> %792
  %794 = select <8 x i1> %793, <8 x double> %747, <8 x double> %791
  store <8 x double> %794, ptr %187, align 64, !tbaa !26
  %795 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %796 = select <8 x i1> %720, <8 x double> %795, <8 x double> %782
  store <8 x double> %796, ptr %188, align 64, !tbaa !26
  %797 = xor <8 x i64> %788, splat (i64 -1)
  %798 = and <8 x i64> %787, %797
  store <8 x i64> %798, ptr %175, align 64, !tbaa !26
  %799 = load i64, ptr %178, align 8, !tbaa !20
  %800 = icmp sgt i64 %799, 0
  br i1 %800, label %801, label %1428

801:                                              ; preds = %694
  %802 = xor <8 x i64> %560, splat (i64 -1)
  br label %803

803:                                              ; preds = %801, %1396
  %804 = phi i64 [ 0, %801 ], [ %1412, %1396 ]
  %805 = load ptr, ptr %151, align 8, !tbaa !28
  %806 = getelementptr inbounds nuw %struct.Piece, ptr %805, i64 %804
  %807 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %808 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %809 = getelementptr inbounds nuw i8, ptr %806, i64 8384
  %810 = load <8 x i64>, ptr %809, align 64, !tbaa !26
  %811 = fdiv <8 x double> %807, %808
  %812 = fdiv <8 x double> splat (double 1.000000e+00), %807
  %813 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %811, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %814 = fadd <8 x double> %811, splat (double 1.000000e+00)
  %815 = fdiv <8 x double> %813, %814
  %816 = fmul <8 x double> %812, %815
  %817 = icmp eq <8 x i64> %810, zeroinitializer
  %818 = select <8 x i1> %817, <8 x double> %816, <8 x double> %812
  %819 = fneg <8 x double> %812
  %820 = fneg <8 x double> %814
  %821 = fmul <8 x double> %812, %820
  %822 = select <8 x i1> %817, <8 x double> %821, <8 x double> %819
  %823 = fmul <8 x double> %811, %811
  %824 = fdiv <8 x double> %823, %814
  %825 = fmul <8 x double> %812, %824
  %826 = select <8 x i1> %817, <8 x double> %825, <8 x double> zeroinitializer
  %827 = getelementptr inbounds nuw i8, ptr %806, i64 5632
  %828 = load <8 x double>, ptr %827, align 64, !tbaa !26
  %829 = select <8 x i1> %720, <8 x double> %828, <8 x double> %818
  store <8 x double> %829, ptr %827, align 64, !tbaa !26
  %830 = getelementptr inbounds nuw i8, ptr %806, i64 5696
  %831 = load <8 x double>, ptr %830, align 64, !tbaa !26
  %832 = select <8 x i1> %720, <8 x double> %831, <8 x double> %822
  store <8 x double> %832, ptr %830, align 64, !tbaa !26
  %833 = getelementptr inbounds nuw i8, ptr %806, i64 5760
  %834 = load <8 x double>, ptr %833, align 64, !tbaa !26
  %835 = select <8 x i1> %720, <8 x double> %834, <8 x double> %826
  store <8 x double> %835, ptr %833, align 64, !tbaa !26
  %836 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %837 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %838 = fdiv <8 x double> %836, %837
  %839 = select <8 x i1> %817, <8 x double> %838, <8 x double> zeroinitializer
  %840 = getelementptr inbounds nuw i8, ptr %806, i64 2944
  %841 = getelementptr inbounds nuw i8, ptr %806, i64 3840
  %842 = getelementptr inbounds nuw i8, ptr %806, i64 4736
  br label %1415

843:                                              ; preds = %1415
  %844 = getelementptr inbounds nuw i8, ptr %806, i64 6080
  %845 = getelementptr inbounds nuw i8, ptr %806, i64 3520
  %846 = load <8 x double>, ptr %845, align 64, !tbaa !26
  %847 = fcmp ogt <8 x double> %846, zeroinitializer
  %848 = select <8 x i1> %847, <8 x double> %846, <8 x double> zeroinitializer
  %849 = load <8 x double>, ptr %844, align 64, !tbaa !26
  %850 = select <8 x i1> %720, <8 x double> %849, <8 x double> %848
  store <8 x double> %850, ptr %844, align 64, !tbaa !26
  %851 = getelementptr inbounds nuw i8, ptr %806, i64 384
  %852 = load <8 x double>, ptr %851, align 64, !tbaa !26
  %853 = getelementptr inbounds nuw i8, ptr %806, i64 448
  %854 = load <8 x double>, ptr %853, align 64, !tbaa !26
  %855 = getelementptr inbounds nuw i8, ptr %806, i64 512
  %856 = load <8 x double>, ptr %855, align 64, !tbaa !26
  %857 = getelementptr inbounds nuw i8, ptr %806, i64 640
  %858 = load <8 x double>, ptr %857, align 64, !tbaa !26
  %859 = getelementptr inbounds nuw i8, ptr %806, i64 768
  %860 = load <8 x double>, ptr %859, align 64, !tbaa !26
  %861 = getelementptr inbounds nuw i8, ptr %806, i64 832
  %862 = getelementptr inbounds nuw i8, ptr %806, i64 1536
  %863 = load <8 x double>, ptr %862, align 64, !tbaa !26
  %864 = getelementptr inbounds nuw i8, ptr %806, i64 1600
  %865 = getelementptr inbounds nuw i8, ptr %806, i64 4672
  %866 = load <8 x double>, ptr %865, align 64, !tbaa !26
  %867 = fsub <8 x double> %866, %863
  %868 = getelementptr inbounds nuw i8, ptr %806, i64 5568
  %869 = load <8 x double>, ptr %868, align 64, !tbaa !26
  %870 = fsub <8 x double> %869, %863
  %871 = load <8 x double>, ptr %830, align 64, !tbaa !26
  %872 = load <8 x double>, ptr %833, align 64, !tbaa !26
  %873 = fmul <8 x double> %867, %871
  %874 = fmul <8 x double> %870, %872
  %875 = fmul <8 x double> %863, %871
  %876 = fmul <8 x double> %858, %875
  %877 = fmul <8 x double> %863, %872
  %878 = fmul <8 x double> %858, %877
  %879 = getelementptr inbounds nuw i8, ptr %806, i64 8528
  %880 = load ptr, ptr %879, align 16, !tbaa !48
  %881 = getelementptr inbounds nuw i8, ptr %806, i64 8536
  %882 = load ptr, ptr %881, align 8, !tbaa !58
  %883 = getelementptr inbounds nuw i8, ptr %806, i64 8616
  %884 = load ptr, ptr %883, align 8, !tbaa !50
  %885 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %886 = and <8 x i64> %885, %802
  %887 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %886)
  %888 = icmp eq i64 %887, 0
  %889 = getelementptr inbounds nuw i8, ptr %806, i64 8520
  %890 = load ptr, ptr %889, align 8, !tbaa !59
  %891 = getelementptr inbounds nuw i8, ptr %806, i64 8544
  %892 = load ptr, ptr %891, align 32, !tbaa !60
  %893 = load i64, ptr %141, align 16, !tbaa !21
  %894 = icmp sgt i64 %893, 0
  br i1 %894, label %895, label %897

895:                                              ; preds = %843
  %896 = getelementptr inbounds nuw i8, ptr %806, i64 8512
  br label %910

897:                                              ; preds = %945, %843
  %898 = fmul <8 x double> %860, %871
  %899 = fmul <8 x double> %860, %872
  %900 = getelementptr inbounds nuw i8, ptr %806, i64 8696
  %901 = load ptr, ptr %900, align 8, !tbaa !51
  %902 = getelementptr inbounds nuw i8, ptr %806, i64 8704
  %903 = load ptr, ptr %902, align 64, !tbaa !61
  %904 = load i64, ptr %142, align 8, !tbaa !22
  %905 = icmp sgt i64 %904, 0
  br i1 %905, label %906, label %979

906:                                              ; preds = %897
  %907 = getelementptr inbounds nuw i8, ptr %806, i64 8648
  %908 = getelementptr inbounds nuw i8, ptr %806, i64 8656
  %909 = getelementptr inbounds nuw i8, ptr %806, i64 8664
  br label %952

910:                                              ; preds = %895, %945
  %911 = phi i64 [ 0, %895 ], [ %949, %945 ]
  %912 = getelementptr inbounds nuw <8 x double>, ptr %880, i64 %911
  %913 = load <8 x double>, ptr %912, align 64, !tbaa !26
  %914 = getelementptr inbounds nuw <8 x double>, ptr %882, i64 %911
  %915 = load <8 x double>, ptr %914, align 64, !tbaa !26
  %916 = fsub <8 x double> %913, %915
  %917 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %839, <8 x double> %916, <8 x double> %913)
  br i1 %888, label %922, label %918

918:                                              ; preds = %910
  %919 = getelementptr inbounds nuw <8 x double>, ptr %890, i64 %911
  %920 = load <8 x double>, ptr %919, align 64, !tbaa !26
  %921 = select <8 x i1> %720, <8 x double> %920, <8 x double> %917
  br label %922

922:                                              ; preds = %918, %910
  %923 = phi <8 x double> [ %921, %918 ], [ %917, %910 ]
  %924 = getelementptr inbounds nuw <8 x double>, ptr %890, i64 %911
  store <8 x double> %923, ptr %924, align 64, !tbaa !26
  %925 = load i64, ptr %896, align 64, !tbaa !31
  %926 = icmp slt i64 %911, %925
  %927 = getelementptr inbounds nuw <8 x double>, ptr %884, i64 %911
  %928 = load <8 x double>, ptr %927, align 64, !tbaa !26
  br i1 %926, label %929, label %932

929:                                              ; preds = %922
  %930 = fmul <8 x double> %878, %915
  %931 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %876, <8 x double> %913, <8 x double> %930)
  br label %945

932:                                              ; preds = %922
  %933 = fmul <8 x double> %856, %913
  %934 = fmul <8 x double> %933, splat (double 0x3FD5555555555555)
  %935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %854, <8 x double> splat (double 5.000000e-01), <8 x double> %934)
  %936 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %913, <8 x double> %935, <8 x double> %852)
  %937 = fmul <8 x double> %913, %936
  %938 = fmul <8 x double> %856, %915
  %939 = fmul <8 x double> %938, splat (double 0x3FD5555555555555)
  %940 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %854, <8 x double> splat (double 5.000000e-01), <8 x double> %939)
  %941 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %915, <8 x double> %940, <8 x double> %852)
  %942 = fmul <8 x double> %915, %941
  %943 = fmul <8 x double> %874, %942
  %944 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %873, <8 x double> %937, <8 x double> %943)
  br label %945

945:                                              ; preds = %932, %929
  %946 = phi <8 x double> [ %944, %932 ], [ %931, %929 ]
  %947 = fmul <8 x double> %946, %928
  %948 = getelementptr inbounds nuw <8 x double>, ptr %892, i64 %911
  store <8 x double> %947, ptr %948, align 64, !tbaa !26
  %949 = add nuw nsw i64 %911, 1
  %950 = load i64, ptr %141, align 16, !tbaa !21
  %951 = icmp slt i64 %949, %950
  br i1 %951, label %910, label %897, !llvm.loop !62

952:                                              ; preds = %906, %952
  %953 = phi i64 [ 0, %906 ], [ %954, %952 ]
  %954 = add nuw nsw i64 %953, 1
  %955 = getelementptr inbounds nuw <8 x double>, ptr %901, i64 %954
  %956 = load <8 x double>, ptr %955, align 64, !tbaa !26
  %957 = getelementptr inbounds nuw <8 x double>, ptr %901, i64 %953
  %958 = load <8 x double>, ptr %957, align 64, !tbaa !26
  %959 = fsub <8 x double> %956, %958
  %960 = load ptr, ptr %907, align 8, !tbaa !52
  %961 = getelementptr inbounds nuw <8 x double>, ptr %960, i64 %953
  %962 = load <8 x double>, ptr %961, align 64, !tbaa !26
  %963 = fmul <8 x double> %959, %962
  %964 = getelementptr inbounds nuw <8 x double>, ptr %903, i64 %954
  %965 = load <8 x double>, ptr %964, align 64, !tbaa !26
  %966 = getelementptr inbounds nuw <8 x double>, ptr %903, i64 %953
  %967 = load <8 x double>, ptr %966, align 64, !tbaa !26
  %968 = fsub <8 x double> %965, %967
  %969 = load ptr, ptr %908, align 16, !tbaa !63
  %970 = getelementptr inbounds nuw <8 x double>, ptr %969, i64 %953
  %971 = load <8 x double>, ptr %970, align 64, !tbaa !26
  %972 = fmul <8 x double> %968, %971
  %973 = fmul <8 x double> %899, %972
  %974 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %898, <8 x double> %963, <8 x double> %973)
  %975 = load ptr, ptr %909, align 8, !tbaa !64
  %976 = getelementptr inbounds nuw <8 x double>, ptr %975, i64 %953
  store <8 x double> %974, ptr %976, align 64, !tbaa !26
  %977 = load i64, ptr %142, align 8, !tbaa !22
  %978 = icmp slt i64 %954, %977
  br i1 %978, label %952, label %979, !llvm.loop !65

979:                                              ; preds = %952, %897
  %980 = getelementptr inbounds nuw i8, ptr %806, i64 1664
  %981 = load <8 x double>, ptr %980, align 64, !tbaa !26
  %982 = fcmp ogt <8 x double> %981, zeroinitializer
  %983 = bitcast <8 x i1> %982 to i8
  %984 = icmp eq i8 %983, 0
  br i1 %984, label %985, label %990

985:                                              ; preds = %979
  %986 = getelementptr inbounds nuw i8, ptr %806, i64 7552
  %987 = load <8 x double>, ptr %986, align 64, !tbaa !26
  %988 = select <8 x i1> %720, <8 x double> %987, <8 x double> zeroinitializer
  store <8 x double> %988, ptr %986, align 64, !tbaa !26
  %989 = load <8 x double>, ptr %861, align 64, !tbaa !26, !noalias !66
  br label %1099

990:                                              ; preds = %979
  %991 = load <8 x double>, ptr %862, align 64, !tbaa !26
  %992 = getelementptr inbounds nuw i8, ptr %806, i64 1728
  %993 = load <8 x double>, ptr %992, align 64, !tbaa !26
  %994 = getelementptr inbounds nuw i8, ptr %806, i64 1856
  %995 = load <8 x double>, ptr %994, align 64, !tbaa !26
  %996 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %997 = fneg <8 x double> %996
  %998 = fdiv <8 x double> %997, %993
  %999 = fcmp ogt <8 x double> %998, splat (double -7.000000e+02)
  %1000 = select <8 x i1> %999, <8 x double> %998, <8 x double> splat (double -7.000000e+02)
  %1001 = fcmp olt <8 x double> %1000, splat (double 7.000000e+02)
  %1002 = select <8 x i1> %1001, <8 x double> %1000, <8 x double> splat (double 7.000000e+02)
  %1003 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1002, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %1004 = fadd <8 x double> %1003, splat (double 0xC338000000000000)
  %1005 = fneg <8 x double> %1004
  %1006 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1005, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %1002)
  %1007 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1005, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %1006)
  %1008 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1007, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %1009 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1008, <8 x double> %1007, <8 x double> splat (double 0x3E5AE64567F544E4))
  %1010 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1009, <8 x double> %1007, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %1011 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1010, <8 x double> %1007, <8 x double> splat (double 0x3EC71DE3A556C734))
  %1012 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1011, <8 x double> %1007, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %1013 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1012, <8 x double> %1007, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %1014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1013, <8 x double> %1007, <8 x double> splat (double 0x3F56C16C16C16C17))
  %1015 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1014, <8 x double> %1007, <8 x double> splat (double 0x3F81111111111111))
  %1016 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1015, <8 x double> %1007, <8 x double> splat (double 0x3FA5555555555555))
  %1017 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1016, <8 x double> %1007, <8 x double> splat (double 0x3FC5555555555555))
  %1018 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1017, <8 x double> %1007, <8 x double> splat (double 5.000000e-01))
  %1019 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1018, <8 x double> %1007, <8 x double> splat (double 1.000000e+00))
  %1020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1019, <8 x double> %1007, <8 x double> splat (double 1.000000e+00))
  %1021 = bitcast <8 x double> %1003 to <8 x i64>
  %1022 = shl <8 x i64> %1021, splat (i64 52)
  %1023 = bitcast <8 x double> %1020 to <8 x i64>
  %1024 = add <8 x i64> %1022, %1023
  %1025 = bitcast <8 x i64> %1024 to <8 x double>
  %1026 = fsub <8 x double> splat (double 1.000000e+00), %1025
  %1027 = load <8 x double>, ptr %865, align 64, !tbaa !26
  %1028 = fsub <8 x double> %1027, %991
  %1029 = load ptr, ptr %889, align 8, !tbaa !59
  %1030 = load ptr, ptr %879, align 16, !tbaa !48
  %1031 = getelementptr inbounds nuw i8, ptr %806, i64 8560
  %1032 = load ptr, ptr %1031, align 16, !tbaa !49
  %1033 = load ptr, ptr %883, align 8, !tbaa !50
  %1034 = getelementptr inbounds nuw i8, ptr %806, i64 8552
  %1035 = load ptr, ptr %1034, align 8, !tbaa !69
  %1036 = getelementptr inbounds nuw i8, ptr %806, i64 8512
  %1037 = load i64, ptr %1036, align 64, !tbaa !31
  %1038 = load i64, ptr %141, align 16, !tbaa !21
  %1039 = icmp slt i64 %1037, %1038
  br i1 %1039, label %1040, label %1044

1040:                                             ; preds = %990
  %1041 = getelementptr inbounds nuw i8, ptr %806, i64 1792
  %1042 = load <8 x double>, ptr %1041, align 64, !tbaa !26
  %1043 = fneg <8 x double> %1042
  br label %1056

1044:                                             ; preds = %1056, %990
  %1045 = phi <8 x double> [ zeroinitializer, %990 ], [ %1087, %1056 ]
  %1046 = phi <8 x double> [ zeroinitializer, %990 ], [ %1095, %1056 ]
  %1047 = getelementptr inbounds nuw i8, ptr %806, i64 3904
  %1048 = load <8 x double>, ptr %1047, align 64, !tbaa !26
  %1049 = fsub <8 x double> %1048, %1027
  %1050 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1045, <8 x double> %1049, <8 x double> %1046)
  %1051 = getelementptr inbounds nuw i8, ptr %806, i64 7552
  %1052 = load <8 x double>, ptr %861, align 64, !tbaa !26
  %1053 = fmul <8 x double> %1052, %1050
  %1054 = load <8 x double>, ptr %1051, align 64, !tbaa !26
  %1055 = select <8 x i1> %720, <8 x double> %1054, <8 x double> %1053
  store <8 x double> %1055, ptr %1051, align 64, !tbaa !26
  br label %1099

1056:                                             ; preds = %1040, %1056
  %1057 = phi <8 x double> [ zeroinitializer, %1040 ], [ %1095, %1056 ]
  %1058 = phi i64 [ %1037, %1040 ], [ %1096, %1056 ]
  %1059 = getelementptr inbounds <8 x double>, ptr %1030, i64 %1058
  %1060 = load <8 x double>, ptr %1059, align 64, !tbaa !26
  %1061 = getelementptr inbounds <8 x double>, ptr %1029, i64 %1058
  %1062 = load <8 x double>, ptr %1061, align 64, !tbaa !26
  %1063 = fadd <8 x double> %1060, %1062
  %1064 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1063, <8 x double> splat (double 5.000000e-01), <8 x double> %1043)
  %1065 = fmul <8 x double> %995, %1064
  %1066 = fcmp ogt <8 x double> %1065, splat (double -5.000000e+00)
  %1067 = select <8 x i1> %1066, <8 x double> %1065, <8 x double> splat (double -5.000000e+00)
  %1068 = fcmp olt <8 x double> %1067, splat (double 5.000000e+00)
  %1069 = select <8 x i1> %1068, <8 x double> %1067, <8 x double> splat (double 5.000000e+00)
  %1070 = fmul <8 x double> %1069, %1069
  %1071 = fadd <8 x double> %1070, splat (double 3.780000e+02)
  %1072 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1070, <8 x double> %1071, <8 x double> splat (double 1.732500e+04))
  %1073 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1070, <8 x double> %1072, <8 x double> splat (double 1.351350e+05))
  %1074 = fmul <8 x double> %1069, %1073
  %1075 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1070, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1076 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1070, <8 x double> %1075, <8 x double> splat (double 6.237000e+04))
  %1077 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1070, <8 x double> %1076, <8 x double> splat (double 1.351350e+05))
  %1078 = fdiv <8 x double> %1074, %1077
  %1079 = fadd <8 x double> %1078, splat (double 1.000000e+00)
  %1080 = fmul <8 x double> %981, %1079
  %1081 = getelementptr inbounds <8 x double>, ptr %1032, i64 %1058
  %1082 = load <8 x double>, ptr %1081, align 64, !tbaa !26
  %1083 = fadd <8 x double> %1082, splat (double -1.000000e+00)
  %1084 = fadd <8 x double> %1083, %1080
  %1085 = fcmp ogt <8 x double> %1084, zeroinitializer
  %1086 = select <8 x i1> %1085, <8 x double> %1084, <8 x double> zeroinitializer
  %1087 = fmul <8 x double> %1026, %1086
  %1088 = fsub <8 x double> %1082, %1087
  %1089 = getelementptr inbounds <8 x double>, ptr %1035, i64 %1058
  %1090 = load <8 x double>, ptr %1089, align 64, !tbaa !26
  %1091 = select <8 x i1> %720, <8 x double> %1090, <8 x double> %1088
  store <8 x double> %1091, ptr %1089, align 64, !tbaa !26
  %1092 = getelementptr inbounds <8 x double>, ptr %1033, i64 %1058
  %1093 = load <8 x double>, ptr %1092, align 64, !tbaa !26
  %1094 = fmul <8 x double> %1028, %1093
  %1095 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1087, <8 x double> %1094, <8 x double> %1057)
  %1096 = add nsw i64 %1058, 1
  %1097 = load i64, ptr %141, align 16, !tbaa !21
  %1098 = icmp slt i64 %1096, %1097
  br i1 %1098, label %1056, label %1044, !llvm.loop !70

1099:                                             ; preds = %985, %1044
  %1100 = phi <8 x double> [ %988, %985 ], [ %1055, %1044 ]
  %1101 = phi <8 x double> [ %989, %985 ], [ %1052, %1044 ]
  %1102 = load <8 x double>, ptr %840, align 64, !tbaa !26
  %1103 = load <8 x double>, ptr %841, align 64, !tbaa !26
  %1104 = fcmp olt <8 x double> %1102, %1103
  %1105 = select <8 x i1> %1104, <8 x double> %1102, <8 x double> %1103
  %1106 = load <8 x double>, ptr %806, align 64, !tbaa !26
  %1107 = fmul <8 x double> %1106, splat (double 3.000000e-01)
  %1108 = fcmp ogt <8 x double> %1105, %1107
  %1109 = select <8 x i1> %1108, <8 x double> %1105, <8 x double> %1107
  %1110 = select <8 x i1> %720, <8 x double> %1102, <8 x double> %1109
  store <8 x double> %1110, ptr %840, align 64, !tbaa !26
  %1111 = getelementptr inbounds nuw i8, ptr %806, i64 3072
  %1112 = load <8 x double>, ptr %1111, align 64, !tbaa !26, !noalias !66
  %1113 = getelementptr inbounds nuw i8, ptr %806, i64 7744
  %1114 = load <8 x double>, ptr %1113, align 64, !tbaa !26, !noalias !66
  %1115 = fmul <8 x double> %1112, %1114
  %1116 = fcmp ogt <8 x double> %1115, zeroinitializer
  %1117 = select <8 x i1> %1116, <8 x double> %1115, <8 x double> zeroinitializer
  %1118 = fcmp uge <8 x double> %1117, splat (double 1.000000e+00)
  %1119 = select <8 x i1> %1118, <8 x double> splat (double 1.000000e+00), <8 x double> %1117
  %1120 = getelementptr inbounds nuw i8, ptr %806, i64 8448
  %1121 = load <8 x i64>, ptr %1120, align 64, !tbaa !26, !noalias !66
  %1122 = load <8 x double>, ptr %189, align 64, !tbaa !26, !noalias !66
  %1123 = getelementptr inbounds nuw i8, ptr %806, i64 3200
  %1124 = load <8 x double>, ptr %1123, align 64, !tbaa !26, !noalias !66
  %1125 = icmp eq <8 x i64> %1121, zeroinitializer
  %1126 = select <8 x i1> %1125, <8 x double> %1124, <8 x double> %1122
  %1127 = getelementptr inbounds nuw i8, ptr %806, i64 3584
  %1128 = load <8 x double>, ptr %1127, align 64, !tbaa !26, !noalias !66
  %1129 = fsub <8 x double> splat (double 1.000000e+00), %1119
  %1130 = getelementptr inbounds nuw i8, ptr %806, i64 1984
  %1131 = load <8 x double>, ptr %1130, align 64, !tbaa !26, !noalias !66
  %1132 = getelementptr inbounds nuw i8, ptr %806, i64 8320
  %1133 = load <8 x i64>, ptr %1132, align 64, !tbaa !26, !noalias !66
  %1134 = fsub <8 x double> %1106, %1110
  %1135 = getelementptr inbounds nuw i8, ptr %806, i64 7808
  %1136 = load <8 x double>, ptr %1135, align 64, !tbaa !26, !noalias !66
  %1137 = fmul <8 x double> %1134, %1136
  %1138 = icmp eq <8 x i64> %1133, zeroinitializer
  %1139 = select <8 x i1> %1138, <8 x double> zeroinitializer, <8 x double> %1137
  %1140 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1129, <8 x double> %1131, <8 x double> %1139)
  %1141 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1128, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1142 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1128, <8 x double> %1141, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1143 = fdiv <8 x double> splat (double 1.000000e+00), %1142
  %1144 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1126, <8 x double> %1140, <8 x double> splat (double 1.000000e+00))
  %1145 = fdiv <8 x double> splat (double 1.000000e+00), %1144
  %1146 = load <8 x double>, ptr %190, align 64, !tbaa !26, !noalias !66
  %1147 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !66
  %1148 = select <8 x i1> %1125, <8 x double> %1147, <8 x double> %1146
  %1149 = fsub <8 x double> %1148, %1128
  %1150 = fmul <8 x double> %1149, %1145
  %1151 = fmul <8 x double> %1126, %1150
  %1152 = load <8 x double>, ptr %827, align 64, !tbaa !26, !noalias !66
  %1153 = getelementptr inbounds nuw i8, ptr %806, i64 3264
  %1154 = load <8 x double>, ptr %1153, align 64, !tbaa !26, !noalias !66
  %1155 = load <8 x double>, ptr %830, align 64, !tbaa !26, !noalias !66
  %1156 = getelementptr inbounds nuw i8, ptr %806, i64 4160
  %1157 = load <8 x double>, ptr %1156, align 64, !tbaa !26, !noalias !66
  %1158 = fmul <8 x double> %1155, %1157
  %1159 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1152, <8 x double> %1154, <8 x double> %1158)
  %1160 = load <8 x double>, ptr %833, align 64, !tbaa !26, !noalias !66
  %1161 = getelementptr inbounds nuw i8, ptr %806, i64 5056
  %1162 = load <8 x double>, ptr %1161, align 64, !tbaa !26, !noalias !66
  %1163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1160, <8 x double> %1162, <8 x double> %1159)
  %1164 = fdiv <8 x double> %1136, %1101
  %1165 = fcmp ule <8 x double> %1119, zeroinitializer
  %1166 = or <8 x i1> %1118, %1165
  %1167 = fmul <8 x double> %1114, %1131
  %1168 = select <8 x i1> %1166, <8 x double> zeroinitializer, <8 x double> %1167
  %1169 = select <8 x i1> %1138, <8 x double> %1168, <8 x double> %1164
  %1170 = fmul <8 x double> %1126, %1151
  %1171 = fmul <8 x double> %1145, %1170
  %1172 = fmul <8 x double> %1143, %1171
  %1173 = fmul <8 x double> %1172, %1169
  %1174 = fdiv <8 x double> %1173, %1152
  %1175 = fadd <8 x double> %1174, splat (double 1.000000e+00)
  %1176 = fdiv <8 x double> splat (double 1.000000e+00), %1175
  %1177 = getelementptr inbounds nuw i8, ptr %806, i64 3456
  %1178 = load <8 x double>, ptr %1177, align 64, !tbaa !26, !noalias !66
  %1179 = fsub <8 x double> %1151, %1178
  %1180 = load <8 x double>, ptr %844, align 64, !tbaa !26, !noalias !66
  %1181 = fsub <8 x double> %1163, %1180
  %1182 = fmul <8 x double> %1181, %1174
  %1183 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1179, <8 x double> %1143, <8 x double> %1182)
  %1184 = fmul <8 x double> %1183, %1176
  %1185 = getelementptr inbounds nuw i8, ptr %806, i64 6016
  %1186 = load <8 x double>, ptr %1185, align 64, !tbaa !26, !noalias !66
  %1187 = fcmp ule <8 x double> %1186, zeroinitializer
  %1188 = fcmp ule <8 x double> %1184, zeroinitializer
  %1189 = or <8 x i1> %1187, %1188
  %1190 = select <8 x i1> %1189, <8 x double> zeroinitializer, <8 x double> %1184
  %1191 = getelementptr inbounds nuw i8, ptr %806, i64 2176
  %1192 = load <8 x double>, ptr %1191, align 64, !tbaa !26, !noalias !66
  %1193 = fcmp ogt <8 x double> %1192, zeroinitializer
  %1194 = getelementptr inbounds nuw i8, ptr %806, i64 1024
  %1195 = load <8 x double>, ptr %1194, align 64, !tbaa !26, !noalias !66
  %1196 = bitcast <8 x i1> %1193 to i8
  %1197 = icmp eq i8 %1196, 0
  br i1 %1197, label %1210, label %1198

1198:                                             ; preds = %1099
  %1199 = getelementptr inbounds nuw i8, ptr %806, i64 3648
  %1200 = load <8 x double>, ptr %1199, align 64, !tbaa !26, !noalias !66
  %1201 = fadd <8 x double> %1150, %1200
  %1202 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1201)
  %1203 = fcmp ogt <8 x double> %1192, splat (double 1.000000e-09)
  %1204 = select <8 x i1> %1203, <8 x double> %1192, <8 x double> splat (double 1.000000e-09)
  %1205 = fdiv <8 x double> %1202, %1204
  %1206 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1205)
  %1207 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1206)
  %1208 = select <8 x i1> %1193, <8 x double> %1207, <8 x double> splat (double 1.000000e+00)
  %1209 = fmul <8 x double> %1195, %1208
  br label %1210

1210:                                             ; preds = %1099, %1198
  %1211 = phi <8 x double> [ %1209, %1198 ], [ %1195, %1099 ]
  %1212 = getelementptr inbounds nuw i8, ptr %806, i64 4096
  %1213 = load <8 x double>, ptr %1212, align 64, !tbaa !26, !noalias !66
  %1214 = getelementptr inbounds nuw i8, ptr %806, i64 4992
  %1215 = load <8 x double>, ptr %1214, align 64, !tbaa !26, !noalias !66
  %1216 = fmul <8 x double> %1160, %1215
  %1217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1155, <8 x double> %1213, <8 x double> %1216)
  %1218 = getelementptr inbounds nuw i8, ptr %806, i64 1216
  %1219 = load <8 x double>, ptr %1218, align 64, !tbaa !26, !noalias !66
  %1220 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1219, <8 x double> %1152, <8 x double> splat (double 1.000000e+00))
  %1221 = fdiv <8 x double> splat (double 1.000000e+00), %1220
  %1222 = fmul <8 x double> %1145, %1150
  %1223 = fmul <8 x double> %1143, %1222
  %1224 = fmul <8 x double> %1223, %1176
  %1225 = select <8 x i1> %1189, <8 x double> zeroinitializer, <8 x double> %1224
  %1226 = getelementptr inbounds nuw i8, ptr %806, i64 1088
  %1227 = load <8 x double>, ptr %1226, align 64, !tbaa !26, !noalias !66
  %1228 = fmul <8 x double> %1211, splat (double 2.500000e-01)
  %1229 = fmul <8 x double> %1140, %1228
  %1230 = fneg <8 x double> %1145
  %1231 = fmul <8 x double> %1229, %1230
  %1232 = select <8 x i1> %1193, <8 x double> %1231, <8 x double> splat (double -0.000000e+00)
  %1233 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1227, <8 x double> %1225, <8 x double> %1232)
  %1234 = fadd <8 x double> %1180, %1190
  %1235 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1227, <8 x double> %1234, <8 x double> %1211)
  %1236 = fneg <8 x double> %1219
  %1237 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1236, <8 x double> %1217, <8 x double> %1235)
  %1238 = fneg <8 x double> %1126
  %1239 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1221, <8 x double> %1237, <8 x double> %1238)
  %1240 = fmul <8 x double> %1221, %1233
  %1241 = fcmp olt <8 x double> %1240, splat (double 8.000000e-01)
  %1242 = select <8 x i1> %1241, <8 x double> %1240, <8 x double> splat (double 8.000000e-01)
  %1243 = fsub <8 x double> splat (double 1.000000e+00), %1242
  %1244 = fdiv <8 x double> %1239, %1243
  %1245 = fadd <8 x double> %1126, %1244
  %1246 = getelementptr inbounds nuw i8, ptr %806, i64 1152
  %1247 = load <8 x double>, ptr %1246, align 64, !tbaa !26, !noalias !66
  %1248 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1236, <8 x double> %1217, <8 x double> %1247)
  %1249 = fmul <8 x double> %1221, %1248
  %1250 = fcmp olt <8 x double> %1245, %1249
  %1251 = select <8 x i1> %1250, <8 x double> %1245, <8 x double> %1249
  %1252 = select <8 x i1> %1125, <8 x double> %1251, <8 x double> %1122
  %1253 = fsub <8 x double> %1252, %1126
  %1254 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1225, <8 x double> %1253, <8 x double> %1190)
  %1255 = fcmp ogt <8 x double> %1254, zeroinitializer
  %1256 = select <8 x i1> %1255, <8 x double> %1254, <8 x double> zeroinitializer
  %1257 = select <8 x i1> %720, <8 x double> %1124, <8 x double> %1252
  store <8 x double> %1257, ptr %1123, align 64, !tbaa !26
  %1258 = select <8 x i1> %720, <8 x double> %1186, <8 x double> %1256
  store <8 x double> %1258, ptr %1185, align 64, !tbaa !26
  %1259 = fadd <8 x double> %1180, %1258
  %1260 = fneg <8 x double> %1155
  %1261 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1260, <8 x double> %1157, <8 x double> %1259)
  %1262 = fneg <8 x double> %1160
  %1263 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1262, <8 x double> %1162, <8 x double> %1261)
  %1264 = fdiv <8 x double> %1263, %1152
  %1265 = load <8 x double>, ptr %864, align 64, !tbaa !26, !noalias !71
  %1266 = fsub <8 x double> %1265, %1264
  %1267 = getelementptr inbounds nuw i8, ptr %806, i64 4032
  %1268 = load <8 x double>, ptr %1267, align 64, !tbaa !26, !noalias !71
  %1269 = fsub <8 x double> %1268, %1100
  %1270 = getelementptr inbounds nuw i8, ptr %806, i64 3904
  %1271 = load <8 x double>, ptr %1270, align 64, !tbaa !26, !noalias !71
  %1272 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1133)
  %1273 = icmp eq i64 %1272, 0
  br i1 %1273, label %1396, label %1274

1274:                                             ; preds = %1210
  %1275 = fcmp ogt <8 x double> %1269, %1266
  %1276 = getelementptr inbounds nuw i8, ptr %806, i64 7680
  %1277 = load <8 x double>, ptr %1276, align 64, !tbaa !26, !noalias !71
  %1278 = fcmp oeq <8 x double> %1277, zeroinitializer
  %1279 = select <8 x i1> %1278, <8 x i1> %1275, <8 x i1> zeroinitializer
  %1280 = select <8 x i1> %1279, <8 x i64> %1133, <8 x i64> zeroinitializer
  %1281 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1280)
  %1282 = icmp eq i64 %1281, 0
  br i1 %1282, label %1351, label %1283

1283:                                             ; preds = %1274
  %1284 = fsub <8 x double> %1269, %1266
  %1285 = fdiv <8 x double> %1284, %1101
  %1286 = getelementptr inbounds nuw i8, ptr %806, i64 8552
  %1287 = load ptr, ptr %1286, align 8, !tbaa !69, !noalias !71
  %1288 = load i64, ptr %141, align 16, !tbaa !21, !noalias !71
  %1289 = add nsw i64 %1288, -1
  %1290 = getelementptr inbounds <8 x double>, ptr %1287, i64 %1289
  %1291 = load <8 x double>, ptr %1290, align 64, !tbaa !26, !noalias !71
  %1292 = icmp sgt i64 %1288, 1
  br i1 %1292, label %1293, label %1343

1293:                                             ; preds = %1283
  %1294 = getelementptr inbounds nuw i8, ptr %806, i64 8512
  %1295 = load i64, ptr %1294, align 64, !tbaa !31, !noalias !71
  %1296 = getelementptr inbounds nuw i8, ptr %806, i64 8608
  br label %1297

1297:                                             ; preds = %1293, %1340
  %1298 = phi <8 x double> [ %1271, %1293 ], [ %1335, %1340 ]
  %1299 = phi i64 [ %1289, %1293 ], [ %1341, %1340 ]
  %1300 = phi <8 x double> [ %1291, %1293 ], [ %1323, %1340 ]
  %1301 = phi <8 x i64> [ %1280, %1293 ], [ %1327, %1340 ]
  %1302 = phi <8 x double> [ %1285, %1293 ], [ %1334, %1340 ]
  %1303 = icmp slt i64 %1299, %1295
  br i1 %1303, label %1304, label %1310

1304:                                             ; preds = %1297
  %1305 = load ptr, ptr %1296, align 32, !tbaa !74, !noalias !71
  %1306 = getelementptr inbounds nuw <8 x double>, ptr %1305, i64 %1299
  %1307 = load <8 x double>, ptr %1306, align 64, !tbaa !26, !noalias !71
  %1308 = load <8 x double>, ptr %862, align 64, !tbaa !26, !noalias !71
  %1309 = fmul <8 x double> %1307, %1308
  br label %1318

1310:                                             ; preds = %1297
  %1311 = load <8 x double>, ptr %865, align 64, !tbaa !26, !noalias !71
  %1312 = load <8 x double>, ptr %862, align 64, !tbaa !26, !noalias !71
  %1313 = load ptr, ptr %1296, align 32, !tbaa !74, !noalias !71
  %1314 = getelementptr inbounds nuw <8 x double>, ptr %1313, i64 %1299
  %1315 = load <8 x double>, ptr %1314, align 64, !tbaa !26, !noalias !71
  %1316 = fsub <8 x double> %1311, %1312
  %1317 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1315, <8 x double> %1316, <8 x double> %1312)
  br label %1318

1318:                                             ; preds = %1304, %1310
  %1319 = phi <8 x double> [ %1309, %1304 ], [ %1317, %1310 ]
  %1320 = getelementptr inbounds nuw <8 x double>, ptr %1287, i64 %1299
  %1321 = load <8 x double>, ptr %1320, align 64, !tbaa !26, !noalias !71
  %1322 = icmp eq <8 x i64> %1301, zeroinitializer
  %1323 = select <8 x i1> %1322, <8 x double> %1300, <8 x double> %1321
  %1324 = fsub <8 x double> %1298, %1319
  %1325 = fmul <8 x double> %1324, %1323
  %1326 = fcmp olt <8 x double> %1325, %1302
  %1327 = select <8 x i1> %1326, <8 x i64> %1301, <8 x i64> zeroinitializer
  %1328 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1327)
  %1329 = icmp eq i64 %1328, 0
  br i1 %1329, label %1343, label %1330

1330:                                             ; preds = %1318
  %1331 = fneg <8 x double> %1323
  %1332 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1331, <8 x double> %1324, <8 x double> %1302)
  %1333 = icmp eq <8 x i64> %1327, zeroinitializer
  %1334 = select <8 x i1> %1333, <8 x double> %1302, <8 x double> %1332
  %1335 = select <8 x i1> %1333, <8 x double> %1298, <8 x double> %1319
  %1336 = icmp eq i64 %1299, 1
  br i1 %1336, label %1337, label %1340

1337:                                             ; preds = %1330
  %1338 = load <8 x double>, ptr %1287, align 64, !tbaa !26, !noalias !71
  %1339 = select <8 x i1> %1333, <8 x double> %1323, <8 x double> %1338
  br label %1343

1340:                                             ; preds = %1330
  %1341 = add nsw i64 %1299, -1
  %1342 = icmp sgt i64 %1299, 1
  br i1 %1342, label %1297, label %1343, !llvm.loop !75

1343:                                             ; preds = %1340, %1318, %1337, %1283
  %1344 = phi <8 x double> [ %1285, %1283 ], [ %1334, %1337 ], [ %1302, %1318 ], [ %1334, %1340 ]
  %1345 = phi <8 x double> [ %1271, %1283 ], [ %1335, %1337 ], [ %1298, %1318 ], [ %1335, %1340 ]
  %1346 = phi <8 x double> [ %1291, %1283 ], [ %1339, %1337 ], [ %1323, %1318 ], [ %1323, %1340 ]
  %1347 = fdiv <8 x double> %1344, %1346
  %1348 = fsub <8 x double> %1345, %1347
  %1349 = icmp eq <8 x i64> %1280, zeroinitializer
  %1350 = select <8 x i1> %1349, <8 x double> %1271, <8 x double> %1348
  br label %1351

1351:                                             ; preds = %1343, %1274
  %1352 = phi <8 x double> [ %1350, %1343 ], [ %1271, %1274 ]
  %1353 = getelementptr inbounds nuw i8, ptr %806, i64 2560
  %1354 = load <8 x double>, ptr %1353, align 64, !tbaa !26, !noalias !71
  %1355 = getelementptr inbounds nuw i8, ptr %806, i64 2624
  %1356 = load <8 x double>, ptr %1355, align 64, !tbaa !26, !noalias !71
  %1357 = getelementptr inbounds nuw i8, ptr %806, i64 2688
  %1358 = load <8 x double>, ptr %1357, align 64, !tbaa !26, !noalias !71
  %1359 = getelementptr inbounds nuw i8, ptr %806, i64 2752
  %1360 = load <8 x double>, ptr %1359, align 64, !tbaa !26, !noalias !71
  %1361 = fmul <8 x double> %1106, splat (double 2.000000e-05)
  br label %1362

1362:                                             ; preds = %1351, %1362
  %1363 = phi <8 x i64> [ splat (i64 -1), %1351 ], [ %1380, %1362 ]
  %1364 = phi i32 [ 0, %1351 ], [ %1381, %1362 ]
  %1365 = phi <8 x double> [ %1110, %1351 ], [ %1377, %1362 ]
  %1366 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1365, <8 x double> %1360, <8 x double> %1358)
  %1367 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1365, <8 x double> %1366, <8 x double> %1356)
  %1368 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1365, <8 x double> %1367, <8 x double> %1354)
  %1369 = fsub <8 x double> %1368, %1352
  %1370 = fmul <8 x double> %1365, splat (double 3.000000e+00)
  %1371 = fmul <8 x double> %1370, %1360
  %1372 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1358, <8 x double> splat (double 2.000000e+00), <8 x double> %1371)
  %1373 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1365, <8 x double> %1372, <8 x double> %1356)
  %1374 = fdiv <8 x double> %1369, %1373
  %1375 = fsub <8 x double> %1365, %1374
  %1376 = icmp eq <8 x i64> %1363, zeroinitializer
  %1377 = select <8 x i1> %1376, <8 x double> %1365, <8 x double> %1375
  %1378 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1374)
  %1379 = fcmp oge <8 x double> %1378, %1361
  %1380 = select <8 x i1> %1379, <8 x i64> %1363, <8 x i64> zeroinitializer
  %1381 = add nuw nsw i32 %1364, 1
  %1382 = icmp samesign ult i32 %1364, 3
  %1383 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1380)
  %1384 = icmp ne i64 %1383, 0
  %1385 = select i1 %1382, i1 %1384, i1 false
  br i1 %1385, label %1362, label %1386, !llvm.loop !76

1386:                                             ; preds = %1362
  %1387 = fmul <8 x double> %1106, splat (double 2.800000e-01)
  %1388 = fcmp ogt <8 x double> %1377, %1387
  %1389 = select <8 x i1> %1388, <8 x double> %1377, <8 x double> %1387
  %1390 = fcmp olt <8 x double> %1389, %1106
  %1391 = select <8 x i1> %1390, <8 x double> %1389, <8 x double> %1106
  %1392 = select <8 x i1> %1138, <8 x double> %1110, <8 x double> %1391
  %1393 = fcmp olt <8 x double> %1269, %1266
  %1394 = select <8 x i1> %1138, <8 x i1> splat (i1 true), <8 x i1> %1393
  %1395 = select <8 x i1> %1394, <8 x double> %1269, <8 x double> %1266
  br label %1396

1396:                                             ; preds = %1210, %1386
  %1397 = phi <8 x double> [ %1395, %1386 ], [ %1269, %1210 ]
  %1398 = phi <8 x double> [ %1392, %1386 ], [ %1110, %1210 ]
  %1399 = phi <8 x double> [ %1352, %1386 ], [ %1271, %1210 ]
  %1400 = fsub <8 x double> %1266, %1397
  %1401 = select <8 x i1> %720, <8 x double> %1154, <8 x double> %1264
  store <8 x double> %1401, ptr %1153, align 64, !tbaa !26
  %1402 = select <8 x i1> %720, <8 x double> %1112, <8 x double> %1400
  store <8 x double> %1402, ptr %1111, align 64, !tbaa !26
  %1403 = getelementptr inbounds nuw i8, ptr %806, i64 3136
  %1404 = load <8 x double>, ptr %1403, align 64, !tbaa !26
  %1405 = select <8 x i1> %720, <8 x double> %1404, <8 x double> %1397
  store <8 x double> %1405, ptr %1403, align 64, !tbaa !26
  %1406 = getelementptr inbounds nuw i8, ptr %806, i64 3008
  %1407 = and <8 x i64> %1133, %560
  %1408 = load <8 x double>, ptr %1406, align 64, !tbaa !26
  %1409 = icmp eq <8 x i64> %1407, zeroinitializer
  %1410 = select <8 x i1> %1409, <8 x double> %1408, <8 x double> %1399
  store <8 x double> %1410, ptr %1406, align 64, !tbaa !26
  %1411 = select <8 x i1> %1409, <8 x double> %1110, <8 x double> %1398
  store <8 x double> %1411, ptr %840, align 64, !tbaa !26
  %1412 = add nuw nsw i64 %804, 1
  %1413 = load i64, ptr %178, align 8, !tbaa !20
  %1414 = icmp slt i64 %1412, %1413
  br i1 %1414, label %803, label %1428, !llvm.loop !77

1415:                                             ; preds = %803, %1415
  %1416 = phi i64 [ 0, %803 ], [ %1426, %1415 ]
  %1417 = getelementptr inbounds nuw [14 x <8 x double>], ptr %840, i64 0, i64 %1416
  %1418 = getelementptr inbounds nuw [14 x <8 x double>], ptr %841, i64 0, i64 %1416
  %1419 = load <8 x double>, ptr %1418, align 64, !tbaa !26
  %1420 = getelementptr inbounds nuw [14 x <8 x double>], ptr %842, i64 0, i64 %1416
  %1421 = load <8 x double>, ptr %1420, align 64, !tbaa !26
  %1422 = fsub <8 x double> %1419, %1421
  %1423 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %839, <8 x double> %1422, <8 x double> %1419)
  %1424 = load <8 x double>, ptr %1417, align 64, !tbaa !26
  %1425 = select <8 x i1> %720, <8 x double> %1424, <8 x double> %1423
  store <8 x double> %1425, ptr %1417, align 64, !tbaa !26
  %1426 = add nuw nsw i64 %1416, 1
  %1427 = icmp eq i64 %1426, 13
  br i1 %1427, label %843, label %1415, !llvm.loop !78

1428:                                             ; preds = %1396, %694
  %1429 = phi i64 [ %799, %694 ], [ %1413, %1396 ]
  %1430 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %1431 = fcmp ogt <8 x double> %1430, zeroinitializer
  %1432 = select <8 x i1> %1431, <8 x i64> %560, <8 x i64> zeroinitializer
  %1433 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1432)
  %1434 = icmp eq i64 %1433, 0
  br i1 %1434, label %1518, label %1435

1435:                                             ; preds = %1428
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1432, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1436 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %1437 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %1438 = fadd <8 x double> %1436, %1437
  store <8 x double> %1438, ptr %9, align 64, !tbaa !26
  %1439 = load ptr, ptr %191, align 8
  %1440 = load ptr, ptr %193, align 8
  %1441 = load ptr, ptr %194, align 8
  br label %1442

1442:                                             ; preds = %1510, %1435
  %1443 = phi i64 [ 0, %1435 ], [ %1511, %1510 ]
  %1444 = getelementptr inbounds nuw i64, ptr %7, i64 %1443
  %1445 = load i64, ptr %1444, align 8, !tbaa !30
  %1446 = icmp eq i64 %1445, 0
  br i1 %1446, label %1510, label %1447

1447:                                             ; preds = %1442
  %1448 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %1443
  %1449 = load i64, ptr %1448, align 8, !tbaa !30
  %1450 = shl nsw i64 %1449, 1
  %1451 = getelementptr inbounds i64, ptr %1439, i64 %1450
  %1452 = load i64, ptr %1451, align 8, !tbaa !30
  %1453 = shl nuw nsw i64 %1443, 1
  %1454 = getelementptr inbounds nuw [16 x i64], ptr %192, i64 0, i64 %1453
  %1455 = getelementptr inbounds i64, ptr %1441, i64 %1450
  %1456 = load i64, ptr %1455, align 8, !tbaa !30
  %1457 = shl nsw i64 %1456, 4
  %1458 = getelementptr inbounds i8, ptr %1440, i64 %1457
  %1459 = getelementptr inbounds nuw double, ptr %9, i64 %1443
  %1460 = load double, ptr %1459, align 8, !tbaa !44
  %1461 = load i64, ptr %1454, align 8, !tbaa !30
  %1462 = getelementptr i8, ptr %1458, i64 -16
  %1463 = icmp sgt i64 %1461, 0
  br i1 %1463, label %1464, label %1473

1464:                                             ; preds = %1447, %1470
  %1465 = phi i64 [ %1471, %1470 ], [ %1461, %1447 ]
  %1466 = shl i64 %1465, 4
  %1467 = getelementptr i8, ptr %1462, i64 %1466
  %1468 = load double, ptr %1467, align 8, !tbaa !44
  %1469 = fcmp ugt double %1460, %1468
  br i1 %1469, label %1473, label %1470

1470:                                             ; preds = %1464
  %1471 = add nsw i64 %1465, -1
  store i64 %1471, ptr %1454, align 8, !tbaa !30
  %1472 = icmp sgt i64 %1465, 1
  br i1 %1472, label %1464, label %1473, !llvm.loop !79

1473:                                             ; preds = %1470, %1464, %1447
  %1474 = phi i64 [ %1461, %1447 ], [ 0, %1470 ], [ %1465, %1464 ]
  %1475 = icmp slt i64 %1474, %1452
  br i1 %1475, label %1476, label %1485

1476:                                             ; preds = %1473, %1482
  %1477 = phi i64 [ %1483, %1482 ], [ %1474, %1473 ]
  %1478 = shl nsw i64 %1477, 4
  %1479 = getelementptr inbounds i8, ptr %1458, i64 %1478
  %1480 = load double, ptr %1479, align 8, !tbaa !44
  %1481 = fcmp ule double %1460, %1480
  br i1 %1481, label %1490, label %1482

1482:                                             ; preds = %1476
  %1483 = add i64 %1477, 1
  store i64 %1483, ptr %1454, align 8, !tbaa !30
  %1484 = icmp eq i64 %1483, %1452
  br i1 %1484, label %1485, label %1476, !llvm.loop !80

1485:                                             ; preds = %1482, %1473
  %1486 = shl i64 %1452, 4
  %1487 = getelementptr i8, ptr %1458, i64 %1486
  %1488 = getelementptr i8, ptr %1487, i64 -8
  %1489 = load double, ptr %1488, align 8, !tbaa !44
  br label %1507

1490:                                             ; preds = %1476
  %1491 = shl nsw i64 %1477, 1
  %1492 = or disjoint i64 %1491, 1
  %1493 = getelementptr inbounds double, ptr %1458, i64 %1492
  %1494 = load double, ptr %1493, align 8, !tbaa !44
  %1495 = icmp sgt i64 %1477, 0
  br i1 %1495, label %1496, label %1507

1496:                                             ; preds = %1490
  %1497 = getelementptr inbounds nuw i8, ptr %1458, i64 %1478
  %1498 = getelementptr i8, ptr %1497, i64 -8
  %1499 = load double, ptr %1498, align 8, !tbaa !44
  %1500 = getelementptr i8, ptr %1497, i64 -16
  %1501 = load double, ptr %1500, align 8, !tbaa !44
  %1502 = fsub double %1460, %1501
  %1503 = fsub double %1480, %1501
  %1504 = fdiv double %1502, %1503
  %1505 = fsub double %1494, %1499
  %1506 = tail call double @llvm.fmuladd.f64(double %1504, double %1505, double %1499)
  br label %1507

1507:                                             ; preds = %1496, %1490, %1485
  %1508 = phi double [ %1506, %1496 ], [ %1494, %1490 ], [ %1489, %1485 ]
  %1509 = getelementptr inbounds nuw double, ptr %8, i64 %1443
  store double %1508, ptr %1509, align 8, !tbaa !44
  br label %1510

1510:                                             ; preds = %1507, %1442
  %1511 = add nuw nsw i64 %1443, 1
  %1512 = icmp eq i64 %1511, 8
  br i1 %1512, label %1513, label %1442, !llvm.loop !81

1513:                                             ; preds = %1510
  %1514 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1515 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %1516 = icmp eq <8 x i64> %1432, zeroinitializer
  %1517 = select <8 x i1> %1516, <8 x double> %1515, <8 x double> %1514
  store <8 x double> %1517, ptr %187, align 64, !tbaa !26
  br label %1518

1518:                                             ; preds = %1428, %1513, %558
  %1519 = phi i64 [ %1429, %1428 ], [ %1429, %1513 ], [ %563, %558 ]
  %1520 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %1521 = icmp eq <8 x i64> %560, zeroinitializer
  %1522 = select <8 x i1> %1521, <8 x double> %1520, <8 x double> zeroinitializer
  store <8 x double> %1522, ptr %195, align 64, !tbaa !26
  %1523 = icmp sgt i64 %1519, 0
  br i1 %1523, label %1526, label %1524

1524:                                             ; preds = %1518
  %1525 = load <8 x double>, ptr %197, align 64, !tbaa !26
  br label %2378

1526:                                             ; preds = %1518
  %1527 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %1528 = xor <8 x i64> %560, splat (i64 -1)
  %1529 = and <8 x i64> %1527, %1528
  %1530 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1529)
  %1531 = icmp eq i64 %1530, 0
  %1532 = icmp eq <8 x i64> %1529, zeroinitializer
  br label %1536

1533:                                             ; preds = %2372
  %1534 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %1535 = icmp sgt i64 %2376, 0
  br i1 %1535, label %2384, label %2378

1536:                                             ; preds = %1526, %2372
  %1537 = phi i64 [ 0, %1526 ], [ %2375, %2372 ]
  %1538 = load ptr, ptr %151, align 8, !tbaa !28
  %1539 = getelementptr inbounds nuw %struct.Piece, ptr %1538, i64 %1537
  br i1 %1531, label %1540, label %1567

1540:                                             ; preds = %1536
  %1541 = getelementptr inbounds nuw i8, ptr %1539, i64 8448
  %1542 = load <8 x i64>, ptr %1541, align 64, !tbaa !26
  %1543 = getelementptr inbounds nuw i8, ptr %1539, i64 3072
  %1544 = load <8 x double>, ptr %1543, align 64, !tbaa !26
  %1545 = getelementptr inbounds nuw i8, ptr %1539, i64 7744
  %1546 = load <8 x double>, ptr %1545, align 64, !tbaa !26
  %1547 = getelementptr inbounds nuw i8, ptr %1539, i64 5696
  %1548 = load <8 x double>, ptr %1547, align 64, !tbaa !26
  %1549 = getelementptr inbounds nuw i8, ptr %1539, i64 5760
  %1550 = load <8 x double>, ptr %1549, align 64, !tbaa !26
  %1551 = getelementptr inbounds nuw i8, ptr %1539, i64 8320
  %1552 = load <8 x i64>, ptr %1551, align 64, !tbaa !26
  %1553 = getelementptr inbounds nuw i8, ptr %1539, i64 1984
  %1554 = load <8 x double>, ptr %1553, align 64, !tbaa !26
  %1555 = load <8 x double>, ptr %1539, align 64, !tbaa !26
  %1556 = getelementptr inbounds nuw i8, ptr %1539, i64 2944
  %1557 = load <8 x double>, ptr %1556, align 64, !tbaa !26
  %1558 = getelementptr inbounds nuw i8, ptr %1539, i64 7808
  %1559 = load <8 x double>, ptr %1558, align 64, !tbaa !26
  %1560 = getelementptr inbounds nuw i8, ptr %1539, i64 5632
  %1561 = load <8 x double>, ptr %1560, align 64, !tbaa !26
  %1562 = getelementptr inbounds nuw i8, ptr %1539, i64 6016
  %1563 = load <8 x double>, ptr %1562, align 64, !tbaa !26
  %1564 = fmul <8 x double> %1544, %1546
  %1565 = fsub <8 x double> %1555, %1557
  %1566 = fmul <8 x double> %1565, %1559
  br label %1720

1567:                                             ; preds = %1536
  %1568 = getelementptr inbounds nuw i8, ptr %1539, i64 3200
  %1569 = getelementptr inbounds nuw i8, ptr %1539, i64 3072
  %1570 = load <8 x double>, ptr %1569, align 64, !tbaa !26, !noalias !82
  %1571 = getelementptr inbounds nuw i8, ptr %1539, i64 7744
  %1572 = load <8 x double>, ptr %1571, align 64, !tbaa !26, !noalias !82
  %1573 = fmul <8 x double> %1570, %1572
  %1574 = fcmp ogt <8 x double> %1573, zeroinitializer
  %1575 = select <8 x i1> %1574, <8 x double> %1573, <8 x double> zeroinitializer
  %1576 = fcmp uge <8 x double> %1575, splat (double 1.000000e+00)
  %1577 = select <8 x i1> %1576, <8 x double> splat (double 1.000000e+00), <8 x double> %1575
  %1578 = getelementptr inbounds nuw i8, ptr %1539, i64 8448
  %1579 = load <8 x i64>, ptr %1578, align 64, !tbaa !26, !noalias !82
  %1580 = load <8 x double>, ptr %189, align 64, !tbaa !26, !noalias !82
  %1581 = load <8 x double>, ptr %1568, align 64, !tbaa !26, !noalias !82
  %1582 = icmp eq <8 x i64> %1579, zeroinitializer
  %1583 = select <8 x i1> %1582, <8 x double> %1581, <8 x double> %1580
  %1584 = getelementptr inbounds nuw i8, ptr %1539, i64 3584
  %1585 = load <8 x double>, ptr %1584, align 64, !tbaa !26, !noalias !82
  %1586 = fsub <8 x double> splat (double 1.000000e+00), %1577
  %1587 = getelementptr inbounds nuw i8, ptr %1539, i64 1984
  %1588 = load <8 x double>, ptr %1587, align 64, !tbaa !26, !noalias !82
  %1589 = getelementptr inbounds nuw i8, ptr %1539, i64 8320
  %1590 = load <8 x i64>, ptr %1589, align 64, !tbaa !26, !noalias !82
  %1591 = load <8 x double>, ptr %1539, align 64, !tbaa !26, !noalias !82
  %1592 = getelementptr inbounds nuw i8, ptr %1539, i64 2944
  %1593 = load <8 x double>, ptr %1592, align 64, !tbaa !26, !noalias !82
  %1594 = fsub <8 x double> %1591, %1593
  %1595 = getelementptr inbounds nuw i8, ptr %1539, i64 7808
  %1596 = load <8 x double>, ptr %1595, align 64, !tbaa !26, !noalias !82
  %1597 = fmul <8 x double> %1594, %1596
  %1598 = icmp eq <8 x i64> %1590, zeroinitializer
  %1599 = select <8 x i1> %1598, <8 x double> zeroinitializer, <8 x double> %1597
  %1600 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1586, <8 x double> %1588, <8 x double> %1599)
  %1601 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1585, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1602 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1585, <8 x double> %1601, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1603 = fdiv <8 x double> splat (double 1.000000e+00), %1602
  %1604 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1583, <8 x double> %1600, <8 x double> splat (double 1.000000e+00))
  %1605 = fdiv <8 x double> splat (double 1.000000e+00), %1604
  %1606 = load <8 x double>, ptr %190, align 64, !tbaa !26, !noalias !82
  %1607 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !82
  %1608 = select <8 x i1> %1582, <8 x double> %1607, <8 x double> %1606
  %1609 = fsub <8 x double> %1608, %1585
  %1610 = fmul <8 x double> %1609, %1605
  %1611 = fmul <8 x double> %1583, %1610
  %1612 = getelementptr inbounds nuw i8, ptr %1539, i64 5632
  %1613 = load <8 x double>, ptr %1612, align 64, !tbaa !26, !noalias !82
  %1614 = getelementptr inbounds nuw i8, ptr %1539, i64 3264
  %1615 = load <8 x double>, ptr %1614, align 64, !tbaa !26, !noalias !82
  %1616 = getelementptr inbounds nuw i8, ptr %1539, i64 5696
  %1617 = load <8 x double>, ptr %1616, align 64, !tbaa !26, !noalias !82
  %1618 = getelementptr inbounds nuw i8, ptr %1539, i64 4160
  %1619 = load <8 x double>, ptr %1618, align 64, !tbaa !26, !noalias !82
  %1620 = fmul <8 x double> %1617, %1619
  %1621 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1613, <8 x double> %1615, <8 x double> %1620)
  %1622 = getelementptr inbounds nuw i8, ptr %1539, i64 5760
  %1623 = load <8 x double>, ptr %1622, align 64, !tbaa !26, !noalias !82
  %1624 = getelementptr inbounds nuw i8, ptr %1539, i64 5056
  %1625 = load <8 x double>, ptr %1624, align 64, !tbaa !26, !noalias !82
  %1626 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1623, <8 x double> %1625, <8 x double> %1621)
  %1627 = getelementptr inbounds nuw i8, ptr %1539, i64 832
  %1628 = load <8 x double>, ptr %1627, align 64, !tbaa !26, !noalias !82
  %1629 = fdiv <8 x double> %1596, %1628
  %1630 = fcmp ule <8 x double> %1577, zeroinitializer
  %1631 = or <8 x i1> %1576, %1630
  %1632 = fmul <8 x double> %1572, %1588
  %1633 = select <8 x i1> %1631, <8 x double> zeroinitializer, <8 x double> %1632
  %1634 = select <8 x i1> %1598, <8 x double> %1633, <8 x double> %1629
  %1635 = fmul <8 x double> %1583, %1611
  %1636 = fmul <8 x double> %1605, %1635
  %1637 = fmul <8 x double> %1603, %1636
  %1638 = fmul <8 x double> %1637, %1634
  %1639 = fdiv <8 x double> %1638, %1613
  %1640 = fadd <8 x double> %1639, splat (double 1.000000e+00)
  %1641 = fdiv <8 x double> splat (double 1.000000e+00), %1640
  %1642 = getelementptr inbounds nuw i8, ptr %1539, i64 3456
  %1643 = load <8 x double>, ptr %1642, align 64, !tbaa !26, !noalias !82
  %1644 = fsub <8 x double> %1611, %1643
  %1645 = getelementptr inbounds nuw i8, ptr %1539, i64 6080
  %1646 = load <8 x double>, ptr %1645, align 64, !tbaa !26, !noalias !82
  %1647 = fsub <8 x double> %1626, %1646
  %1648 = fmul <8 x double> %1647, %1639
  %1649 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1644, <8 x double> %1603, <8 x double> %1648)
  %1650 = fmul <8 x double> %1649, %1641
  %1651 = getelementptr inbounds nuw i8, ptr %1539, i64 6016
  %1652 = load <8 x double>, ptr %1651, align 64, !tbaa !26, !noalias !82
  %1653 = fcmp ule <8 x double> %1652, zeroinitializer
  %1654 = fcmp ule <8 x double> %1650, zeroinitializer
  %1655 = or <8 x i1> %1653, %1654
  %1656 = select <8 x i1> %1655, <8 x double> zeroinitializer, <8 x double> %1650
  %1657 = getelementptr inbounds nuw i8, ptr %1539, i64 2176
  %1658 = load <8 x double>, ptr %1657, align 64, !tbaa !26, !noalias !82
  %1659 = fcmp ogt <8 x double> %1658, zeroinitializer
  %1660 = getelementptr inbounds nuw i8, ptr %1539, i64 1024
  %1661 = load <8 x double>, ptr %1660, align 64, !tbaa !26, !noalias !82
  %1662 = bitcast <8 x i1> %1659 to i8
  %1663 = icmp eq i8 %1662, 0
  br i1 %1663, label %1676, label %1664

1664:                                             ; preds = %1567
  %1665 = getelementptr inbounds nuw i8, ptr %1539, i64 3648
  %1666 = load <8 x double>, ptr %1665, align 64, !tbaa !26, !noalias !82
  %1667 = fadd <8 x double> %1610, %1666
  %1668 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1667)
  %1669 = fcmp ogt <8 x double> %1658, splat (double 1.000000e-09)
  %1670 = select <8 x i1> %1669, <8 x double> %1658, <8 x double> splat (double 1.000000e-09)
  %1671 = fdiv <8 x double> %1668, %1670
  %1672 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1671)
  %1673 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1672)
  %1674 = select <8 x i1> %1659, <8 x double> %1673, <8 x double> splat (double 1.000000e+00)
  %1675 = fmul <8 x double> %1661, %1674
  br label %1676

1676:                                             ; preds = %1664, %1567
  %1677 = phi <8 x double> [ %1675, %1664 ], [ %1661, %1567 ]
  %1678 = getelementptr inbounds nuw i8, ptr %1539, i64 4096
  %1679 = load <8 x double>, ptr %1678, align 64, !tbaa !26, !noalias !82
  %1680 = getelementptr inbounds nuw i8, ptr %1539, i64 4992
  %1681 = load <8 x double>, ptr %1680, align 64, !tbaa !26, !noalias !82
  %1682 = fmul <8 x double> %1623, %1681
  %1683 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1617, <8 x double> %1679, <8 x double> %1682)
  %1684 = getelementptr inbounds nuw i8, ptr %1539, i64 1216
  %1685 = load <8 x double>, ptr %1684, align 64, !tbaa !26, !noalias !82
  %1686 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1685, <8 x double> %1613, <8 x double> splat (double 1.000000e+00))
  %1687 = fdiv <8 x double> splat (double 1.000000e+00), %1686
  %1688 = fmul <8 x double> %1605, %1610
  %1689 = fmul <8 x double> %1603, %1688
  %1690 = fmul <8 x double> %1689, %1641
  %1691 = select <8 x i1> %1655, <8 x double> zeroinitializer, <8 x double> %1690
  %1692 = getelementptr inbounds nuw i8, ptr %1539, i64 1088
  %1693 = load <8 x double>, ptr %1692, align 64, !tbaa !26, !noalias !82
  %1694 = fmul <8 x double> %1677, splat (double 2.500000e-01)
  %1695 = fmul <8 x double> %1600, %1694
  %1696 = fneg <8 x double> %1605
  %1697 = fmul <8 x double> %1695, %1696
  %1698 = select <8 x i1> %1659, <8 x double> %1697, <8 x double> splat (double -0.000000e+00)
  %1699 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1693, <8 x double> %1691, <8 x double> %1698)
  %1700 = fadd <8 x double> %1646, %1656
  %1701 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1693, <8 x double> %1700, <8 x double> %1677)
  %1702 = fneg <8 x double> %1685
  %1703 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1702, <8 x double> %1683, <8 x double> %1701)
  %1704 = fneg <8 x double> %1583
  %1705 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1687, <8 x double> %1703, <8 x double> %1704)
  %1706 = fmul <8 x double> %1687, %1699
  %1707 = fcmp olt <8 x double> %1706, splat (double 8.000000e-01)
  %1708 = select <8 x i1> %1707, <8 x double> %1706, <8 x double> splat (double 8.000000e-01)
  %1709 = fsub <8 x double> splat (double 1.000000e+00), %1708
  %1710 = fdiv <8 x double> %1705, %1709
  %1711 = fadd <8 x double> %1583, %1710
  %1712 = getelementptr inbounds nuw i8, ptr %1539, i64 1152
  %1713 = load <8 x double>, ptr %1712, align 64, !tbaa !26, !noalias !82
  %1714 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1702, <8 x double> %1683, <8 x double> %1713)
  %1715 = fmul <8 x double> %1687, %1714
  %1716 = fcmp olt <8 x double> %1711, %1715
  %1717 = select <8 x i1> %1716, <8 x double> %1711, <8 x double> %1715
  %1718 = select <8 x i1> %1582, <8 x double> %1717, <8 x double> %1580
  %1719 = select <8 x i1> %1532, <8 x double> %1581, <8 x double> %1718
  store <8 x double> %1719, ptr %1568, align 64, !tbaa !26
  br label %1720

1720:                                             ; preds = %1540, %1676
  %1721 = phi <8 x double> [ %1566, %1540 ], [ %1597, %1676 ]
  %1722 = phi <8 x double> [ %1565, %1540 ], [ %1594, %1676 ]
  %1723 = phi <8 x double> [ %1564, %1540 ], [ %1573, %1676 ]
  %1724 = phi <8 x double> [ %1563, %1540 ], [ %1652, %1676 ]
  %1725 = phi <8 x double> [ %1561, %1540 ], [ %1613, %1676 ]
  %1726 = phi <8 x double> [ %1557, %1540 ], [ %1593, %1676 ]
  %1727 = phi <8 x double> [ %1554, %1540 ], [ %1588, %1676 ]
  %1728 = phi <8 x i64> [ %1552, %1540 ], [ %1590, %1676 ]
  %1729 = phi <8 x double> [ %1550, %1540 ], [ %1623, %1676 ]
  %1730 = phi <8 x double> [ %1548, %1540 ], [ %1617, %1676 ]
  %1731 = phi <8 x i64> [ %1542, %1540 ], [ %1579, %1676 ]
  %1732 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %1733 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %1734 = icmp eq <8 x i64> %1731, zeroinitializer
  %1735 = select <8 x i1> %1734, <8 x double> %1733, <8 x double> %1732
  %1736 = getelementptr inbounds nuw i8, ptr %1539, i64 5888
  store <8 x double> %1735, ptr %1736, align 64, !tbaa !26
  %1737 = fcmp ogt <8 x double> %1723, zeroinitializer
  %1738 = select <8 x i1> %1737, <8 x double> %1723, <8 x double> zeroinitializer
  %1739 = fcmp olt <8 x double> %1738, splat (double 1.000000e+00)
  %1740 = select <8 x i1> %1739, <8 x double> %1738, <8 x double> splat (double 1.000000e+00)
  %1741 = getelementptr inbounds nuw i8, ptr %1539, i64 2112
  %1742 = load <8 x double>, ptr %1741, align 64, !tbaa !26
  %1743 = fmul <8 x double> %1740, splat (double 4.180000e+03)
  %1744 = getelementptr inbounds nuw i8, ptr %1539, i64 896
  %1745 = load <8 x double>, ptr %1744, align 64, !tbaa !26
  %1746 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1743, <8 x double> %1745, <8 x double> %1742)
  %1747 = getelementptr inbounds nuw i8, ptr %1539, i64 5696
  %1748 = getelementptr inbounds nuw i8, ptr %1539, i64 4480
  %1749 = load <8 x double>, ptr %1748, align 64, !tbaa !26
  %1750 = getelementptr inbounds nuw i8, ptr %1539, i64 5760
  %1751 = getelementptr inbounds nuw i8, ptr %1539, i64 5376
  %1752 = load <8 x double>, ptr %1751, align 64, !tbaa !26
  %1753 = fmul <8 x double> %1729, %1752
  %1754 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1730, <8 x double> %1749, <8 x double> %1753)
  %1755 = getelementptr inbounds nuw i8, ptr %1539, i64 8320
  %1756 = fcmp ule <8 x double> %1742, zeroinitializer
  %1757 = getelementptr inbounds nuw i8, ptr %1539, i64 7296
  store <8 x double> %1740, ptr %1757, align 64, !tbaa !26
  %1758 = fsub <8 x double> splat (double 1.000000e+00), %1740
  %1759 = getelementptr inbounds nuw i8, ptr %1539, i64 2944
  %1760 = icmp eq <8 x i64> %1728, zeroinitializer
  %1761 = select <8 x i1> %1760, <8 x double> zeroinitializer, <8 x double> %1721
  %1762 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1758, <8 x double> %1727, <8 x double> %1761)
  %1763 = getelementptr inbounds nuw i8, ptr %1539, i64 8256
  store <8 x double> %1762, ptr %1763, align 64, !tbaa !26
  %1764 = getelementptr inbounds nuw i8, ptr %1539, i64 5632
  %1765 = fmul <8 x double> %1746, %1725
  %1766 = icmp eq <8 x i64> %1728, splat (i64 -1)
  %1767 = select <8 x i1> %1756, <8 x i1> splat (i1 true), <8 x i1> %1766
  %1768 = select <8 x i1> %1767, <8 x double> zeroinitializer, <8 x double> %1765
  %1769 = getelementptr inbounds nuw i8, ptr %1539, i64 7360
  store <8 x double> %1768, ptr %1769, align 64, !tbaa !26
  %1770 = fmul <8 x double> %1746, %1754
  %1771 = select <8 x i1> %1767, <8 x double> zeroinitializer, <8 x double> %1770
  %1772 = getelementptr inbounds nuw i8, ptr %1539, i64 7424
  store <8 x double> %1771, ptr %1772, align 64, !tbaa !26
  %1773 = getelementptr inbounds nuw i8, ptr %1539, i64 1920
  %1774 = load <8 x double>, ptr %1773, align 64, !tbaa !26
  %1775 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1758, <8 x double> %1774, <8 x double> %1722)
  %1776 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %1777 = fdiv <8 x double> splat (double 1.000000e+00), %1776
  %1778 = getelementptr inbounds nuw i8, ptr %1539, i64 2240
  %1779 = load <8 x double>, ptr %1778, align 64, !tbaa !26
  %1780 = fcmp ogt <8 x double> %1779, splat (double 1.000000e-30)
  %1781 = select <8 x i1> %1780, <8 x double> %1779, <8 x double> splat (double 1.000000e-30)
  %1782 = fdiv <8 x double> %1775, %1781
  %1783 = fadd <8 x double> %1777, %1782
  %1784 = getelementptr inbounds nuw i8, ptr %1539, i64 7488
  store <8 x double> %1783, ptr %1784, align 64, !tbaa !26
  %1785 = getelementptr inbounds nuw i8, ptr %1539, i64 7168
  store <8 x double> %1724, ptr %1785, align 64, !tbaa !26
  %1786 = getelementptr inbounds nuw i8, ptr %1539, i64 2560
  %1787 = load <8 x double>, ptr %1786, align 64, !tbaa !26
  %1788 = getelementptr inbounds nuw i8, ptr %1539, i64 2624
  %1789 = load <8 x double>, ptr %1788, align 64, !tbaa !26
  %1790 = getelementptr inbounds nuw i8, ptr %1539, i64 2688
  %1791 = load <8 x double>, ptr %1790, align 64, !tbaa !26
  %1792 = getelementptr inbounds nuw i8, ptr %1539, i64 2752
  %1793 = load <8 x double>, ptr %1792, align 64, !tbaa !26
  %1794 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1793, <8 x double> %1791)
  %1795 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1794, <8 x double> %1789)
  %1796 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1795, <8 x double> %1787)
  %1797 = getelementptr inbounds nuw i8, ptr %1539, i64 3776
  store <8 x double> %1796, ptr %1797, align 64, !tbaa !26
  %1798 = getelementptr inbounds nuw i8, ptr %1539, i64 4672
  %1799 = load <8 x double>, ptr %1798, align 64, !tbaa !26
  %1800 = fmul <8 x double> %1730, %1799
  %1801 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1725, <8 x double> %1796, <8 x double> %1800)
  %1802 = getelementptr inbounds nuw i8, ptr %1539, i64 5568
  %1803 = load <8 x double>, ptr %1802, align 64, !tbaa !26
  %1804 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1729, <8 x double> %1803, <8 x double> %1801)
  %1805 = fmul <8 x double> %1804, splat (double 5.000000e-01)
  %1806 = getelementptr inbounds nuw i8, ptr %1539, i64 7104
  store <8 x double> %1805, ptr %1806, align 64, !tbaa !26
  %1807 = getelementptr inbounds nuw i8, ptr %1539, i64 2304
  %1808 = load <8 x double>, ptr %1807, align 64, !tbaa !26
  %1809 = getelementptr inbounds nuw i8, ptr %1539, i64 2368
  %1810 = load <8 x double>, ptr %1809, align 64, !tbaa !26
  %1811 = getelementptr inbounds nuw i8, ptr %1539, i64 2432
  %1812 = load <8 x double>, ptr %1811, align 64, !tbaa !26
  %1813 = getelementptr inbounds nuw i8, ptr %1539, i64 2496
  %1814 = load <8 x double>, ptr %1813, align 64, !tbaa !26
  %1815 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1814, <8 x double> %1812)
  %1816 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1815, <8 x double> %1810)
  %1817 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1816, <8 x double> %1808)
  %1818 = getelementptr inbounds nuw i8, ptr %1539, i64 7040
  store <8 x double> %1817, ptr %1818, align 64, !tbaa !26
  %1819 = getelementptr inbounds nuw i8, ptr %1539, i64 8512
  %1820 = load i64, ptr %1819, align 64, !tbaa !31
  %1821 = icmp eq i64 %1820, 0
  br i1 %1821, label %1822, label %1834

1822:                                             ; preds = %1720
  %1823 = fdiv <8 x double> %1817, %1726
  %1824 = load i64, ptr %141, align 16, !tbaa !21
  %1825 = getelementptr inbounds nuw i8, ptr %1539, i64 8632
  %1826 = load ptr, ptr %1825, align 8, !tbaa !36
  %1827 = getelementptr inbounds <8 x double>, ptr %1826, i64 %1824
  %1828 = load <8 x double>, ptr %1827, align 64, !tbaa !26
  %1829 = fmul <8 x double> %1823, %1828
  %1830 = getelementptr inbounds nuw i8, ptr %1539, i64 64
  %1831 = load <8 x double>, ptr %1830, align 64, !tbaa !26
  %1832 = fsub <8 x double> %1726, %1831
  %1833 = fdiv <8 x double> splat (double 1.000000e+00), %1832
  br label %1857

1834:                                             ; preds = %1720
  %1835 = getelementptr inbounds nuw i8, ptr %1539, i64 64
  %1836 = load <8 x double>, ptr %1835, align 64, !tbaa !26
  %1837 = fsub <8 x double> %1726, %1836
  %1838 = fdiv <8 x double> splat (double 1.000000e+00), %1837
  %1839 = load i64, ptr %141, align 16, !tbaa !21
  %1840 = getelementptr inbounds nuw i8, ptr %1539, i64 8632
  %1841 = load ptr, ptr %1840, align 8, !tbaa !36
  %1842 = shl nsw i64 %1839, 8
  %1843 = getelementptr inbounds i8, ptr %1841, i64 %1842
  %1844 = load <8 x double>, ptr %1843, align 64, !tbaa !26
  %1845 = getelementptr inbounds nuw i8, ptr %1843, i64 64
  %1846 = load <8 x double>, ptr %1845, align 64, !tbaa !26
  %1847 = getelementptr inbounds nuw i8, ptr %1843, i64 128
  %1848 = load <8 x double>, ptr %1847, align 64, !tbaa !26
  %1849 = getelementptr inbounds nuw i8, ptr %1843, i64 192
  %1850 = load <8 x double>, ptr %1849, align 64, !tbaa !26
  %1851 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1850, <8 x double> %1848)
  %1852 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1851, <8 x double> %1846)
  %1853 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1852, <8 x double> %1844)
  %1854 = icmp sgt i64 %1839, %1820
  %1855 = fmul <8 x double> %1838, %1853
  %1856 = select i1 %1854, <8 x double> %1855, <8 x double> %1853
  br label %1857

1857:                                             ; preds = %1822, %1834
  %1858 = phi <8 x double> [ %1833, %1822 ], [ %1838, %1834 ]
  %1859 = phi <8 x double> [ %1832, %1822 ], [ %1837, %1834 ]
  %1860 = phi <8 x double> [ %1829, %1822 ], [ %1856, %1834 ]
  %1861 = getelementptr inbounds nuw i8, ptr %1539, i64 3200
  %1862 = load <8 x double>, ptr %1861, align 64, !tbaa !26
  %1863 = getelementptr inbounds nuw i8, ptr %1539, i64 5952
  %1864 = load <8 x double>, ptr %1863, align 64, !tbaa !26
  %1865 = fcmp ogt <8 x double> %1722, splat (double 0x3D719799812DEA11)
  %1866 = select <8 x i1> %1865, <8 x double> %1722, <8 x double> splat (double 0x3D719799812DEA11)
  %1867 = getelementptr inbounds nuw i8, ptr %1539, i64 6912
  store <8 x double> %1858, ptr %1867, align 64, !tbaa !26
  %1868 = getelementptr inbounds nuw i8, ptr %1539, i64 704
  %1869 = load <8 x double>, ptr %1868, align 64, !tbaa !26
  %1870 = fdiv <8 x double> %1869, %1866
  %1871 = getelementptr inbounds nuw i8, ptr %1539, i64 6976
  store <8 x double> %1870, ptr %1871, align 64, !tbaa !26
  %1872 = getelementptr inbounds nuw i8, ptr %1539, i64 8520
  %1873 = load ptr, ptr %1872, align 8, !tbaa !59
  %1874 = load i64, ptr %141, align 16, !tbaa !21
  %1875 = getelementptr <8 x double>, ptr %1873, i64 %1874
  %1876 = getelementptr i8, ptr %1875, i64 -64
  %1877 = load <8 x double>, ptr %1876, align 64, !tbaa !26
  %1878 = fadd <8 x double> %1864, %1877
  %1879 = fmul <8 x double> %1878, splat (double 5.000000e-01)
  %1880 = getelementptr inbounds nuw i8, ptr %1539, i64 192
  %1881 = load <8 x double>, ptr %1880, align 64, !tbaa !26
  %1882 = getelementptr inbounds nuw i8, ptr %1539, i64 256
  %1883 = load <8 x double>, ptr %1882, align 64, !tbaa !26
  %1884 = getelementptr inbounds nuw i8, ptr %1539, i64 320
  %1885 = load <8 x double>, ptr %1884, align 64, !tbaa !26
  %1886 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1879, <8 x double> %1885, <8 x double> %1883)
  %1887 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1879, <8 x double> %1886, <8 x double> %1881)
  %1888 = fmul <8 x double> %1860, %1887
  %1889 = fmul <8 x double> %1740, %1888
  %1890 = getelementptr inbounds nuw i8, ptr %1539, i64 2048
  %1891 = load <8 x double>, ptr %1890, align 64, !tbaa !26
  %1892 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1889, <8 x double> %1891, <8 x double> splat (double 1.000000e+00))
  %1893 = fdiv <8 x double> splat (double 1.000000e+00), %1892
  %1894 = select <8 x i1> %1760, <8 x double> %1893, <8 x double> splat (double 1.000000e+00)
  %1895 = getelementptr inbounds nuw i8, ptr %1539, i64 7232
  store <8 x double> %1894, ptr %1895, align 64, !tbaa !26
  %1896 = fmul <8 x double> %1888, %1894
  %1897 = getelementptr inbounds nuw i8, ptr %1539, i64 6400
  store <8 x double> %1896, ptr %1897, align 64, !tbaa !26
  %1898 = fmul <8 x double> %1805, splat (double 2.000000e+00)
  %1899 = getelementptr inbounds nuw i8, ptr %1539, i64 384
  %1900 = load <8 x double>, ptr %1899, align 64, !tbaa !26
  %1901 = getelementptr inbounds nuw i8, ptr %1539, i64 448
  %1902 = load <8 x double>, ptr %1901, align 64, !tbaa !26
  %1903 = getelementptr inbounds nuw i8, ptr %1539, i64 512
  %1904 = load <8 x double>, ptr %1903, align 64, !tbaa !26
  %1905 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1864, <8 x double> %1904, <8 x double> %1902)
  %1906 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1864, <8 x double> %1905, <8 x double> %1900)
  %1907 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1898, <8 x double> %1906, <8 x double> %1896)
  %1908 = getelementptr inbounds nuw i8, ptr %1539, i64 6528
  store <8 x double> %1907, ptr %1908, align 64, !tbaa !26
  %1909 = fmul <8 x double> %1758, %1862
  %1910 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1909, <8 x double> %1727, <8 x double> splat (double 1.000000e+00))
  %1911 = fdiv <8 x double> %1862, %1910
  %1912 = load i64, ptr %142, align 8, !tbaa !22
  %1913 = sitofp i64 %1912 to double
  %1914 = fmul double %1913, 2.000000e+00
  %1915 = insertelement <8 x double> poison, double %1914, i64 0
  %1916 = shufflevector <8 x double> %1915, <8 x double> poison, <8 x i32> zeroinitializer
  %1917 = fmul <8 x double> %1870, %1916
  %1918 = fadd <8 x double> %1911, %1917
  %1919 = fdiv <8 x double> %1911, %1918
  %1920 = fmul <8 x double> %1817, %1917
  %1921 = select <8 x i1> %1760, <8 x double> %1911, <8 x double> %1920
  %1922 = getelementptr inbounds nuw i8, ptr %1539, i64 6464
  store <8 x double> %1921, ptr %1922, align 64, !tbaa !26
  %1923 = fmul <8 x double> %1917, %1919
  %1924 = select <8 x i1> %1760, <8 x double> %1911, <8 x double> %1923
  %1925 = getelementptr inbounds nuw i8, ptr %1539, i64 6592
  store <8 x double> %1924, ptr %1925, align 64, !tbaa !26
  %1926 = select <8 x i1> %1760, <8 x double> splat (double 1.000000e+00), <8 x double> %1919
  %1927 = getelementptr inbounds nuw i8, ptr %1539, i64 6656
  store <8 x double> %1926, ptr %1927, align 64, !tbaa !26
  br i1 %1821, label %2089, label %1928

1928:                                             ; preds = %1857
  %1929 = getelementptr inbounds nuw i8, ptr %1539, i64 576
  %1930 = load <8 x double>, ptr %1929, align 64, !tbaa !26
  %1931 = getelementptr inbounds nuw i8, ptr %1539, i64 640
  %1932 = load <8 x double>, ptr %1931, align 64, !tbaa !26
  %1933 = getelementptr inbounds nuw i8, ptr %1539, i64 1536
  %1934 = load <8 x double>, ptr %1933, align 64, !tbaa !26
  %1935 = load i64, ptr %141, align 16, !tbaa !21
  %1936 = fsub <8 x double> %1796, %1934
  %1937 = fmul <8 x double> %1902, splat (double 5.000000e-01)
  %1938 = fmul <8 x double> %1904, splat (double 0x3FE5555555555555)
  %1939 = getelementptr inbounds nuw i8, ptr %1539, i64 8608
  %1940 = load ptr, ptr %1939, align 32, !tbaa !74
  %1941 = getelementptr inbounds nuw i8, ptr %1539, i64 8616
  %1942 = load ptr, ptr %1941, align 8, !tbaa !50
  %1943 = getelementptr inbounds nuw i8, ptr %1539, i64 8544
  %1944 = load ptr, ptr %1943, align 32, !tbaa !60
  %1945 = getelementptr inbounds nuw i8, ptr %1539, i64 8584
  %1946 = load ptr, ptr %1945, align 8, !tbaa !85
  %1947 = getelementptr inbounds nuw i8, ptr %1539, i64 8592
  %1948 = load ptr, ptr %1947, align 16, !tbaa !86
  %1949 = getelementptr inbounds nuw i8, ptr %1539, i64 8600
  %1950 = load ptr, ptr %1949, align 8, !tbaa !87
  %1951 = getelementptr inbounds nuw i8, ptr %1539, i64 8568
  %1952 = load ptr, ptr %1951, align 8, !tbaa !88
  %1953 = getelementptr inbounds nuw i8, ptr %1539, i64 8576
  %1954 = load ptr, ptr %1953, align 64, !tbaa !89
  %1955 = icmp sgt i64 %1935, 0
  br i1 %1955, label %1956, label %2202

1956:                                             ; preds = %1928
  %1957 = load <8 x double>, ptr %1873, align 64, !tbaa !26
  %1958 = getelementptr inbounds nuw i8, ptr %1539, i64 2880
  %1959 = load <8 x double>, ptr %1958, align 64, !tbaa !26
  %1960 = getelementptr inbounds nuw i8, ptr %1539, i64 2816
  %1961 = load <8 x double>, ptr %1960, align 64, !tbaa !26
  %1962 = fmul <8 x double> %1805, splat (double -2.000000e+00)
  %1963 = fmul <8 x double> %1962, %1864
  %1964 = fmul <8 x double> %1864, %1963
  %1965 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1864, <8 x double> %1938, <8 x double> %1937)
  %1966 = fmul <8 x double> %1964, %1965
  %1967 = getelementptr inbounds nuw i8, ptr %1539, i64 8632
  %1968 = fmul <8 x double> %1859, %1959
  %1969 = fdiv <8 x double> %1961, %1930
  br label %1970

1970:                                             ; preds = %1956, %2054
  %1971 = phi <8 x double> [ %1957, %1956 ], [ %2058, %2054 ]
  %1972 = phi <8 x double> [ zeroinitializer, %1956 ], [ %2055, %2054 ]
  %1973 = phi <8 x double> [ zeroinitializer, %1956 ], [ %2056, %2054 ]
  %1974 = phi <8 x double> [ zeroinitializer, %1956 ], [ %2057, %2054 ]
  %1975 = phi <8 x double> [ zeroinitializer, %1956 ], [ %2084, %2054 ]
  %1976 = phi <8 x double> [ zeroinitializer, %1956 ], [ %2086, %2054 ]
  %1977 = phi <8 x double> [ %1932, %1956 ], [ %2059, %2054 ]
  %1978 = phi i64 [ 0, %1956 ], [ %1980, %2054 ]
  %1979 = phi <8 x double> [ zeroinitializer, %1956 ], [ %2060, %2054 ]
  %1980 = add nuw nsw i64 %1978, 1
  %1981 = icmp slt i64 %1980, %1935
  br i1 %1981, label %1982, label %2051

1982:                                             ; preds = %1970
  %1983 = getelementptr inbounds nuw <8 x double>, ptr %1873, i64 %1980
  %1984 = load <8 x double>, ptr %1983, align 64, !tbaa !26
  %1985 = icmp slt i64 %1980, %1820
  br i1 %1985, label %1993, label %1986

1986:                                             ; preds = %1982
  %1987 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1984, <8 x double> %1904, <8 x double> %1902)
  %1988 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1984, <8 x double> %1987, <8 x double> %1900)
  %1989 = fneg <8 x double> %1984
  %1990 = fmul <8 x double> %1984, %1989
  %1991 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1984, <8 x double> %1938, <8 x double> %1937)
  %1992 = fmul <8 x double> %1990, %1991
  br label %1993

1993:                                             ; preds = %1982, %1986
  %1994 = phi <8 x double> [ %1988, %1986 ], [ %1932, %1982 ]
  %1995 = phi <8 x double> [ %1992, %1986 ], [ zeroinitializer, %1982 ]
  %1996 = load i64, ptr %1819, align 64, !tbaa !31
  %1997 = icmp eq i64 %1996, 0
  %1998 = load ptr, ptr %1967, align 8, !tbaa !36
  br i1 %1997, label %1999, label %2003

1999:                                             ; preds = %1993
  %2000 = getelementptr inbounds nuw <8 x double>, ptr %1998, i64 %1980
  %2001 = load <8 x double>, ptr %2000, align 64, !tbaa !26
  %2002 = fmul <8 x double> %1858, %2001
  br label %2019

2003:                                             ; preds = %1993
  %2004 = shl nsw i64 %1980, 8
  %2005 = getelementptr inbounds nuw i8, ptr %1998, i64 %2004
  %2006 = load <8 x double>, ptr %2005, align 64, !tbaa !26
  %2007 = getelementptr inbounds nuw i8, ptr %2005, i64 64
  %2008 = load <8 x double>, ptr %2007, align 64, !tbaa !26
  %2009 = getelementptr inbounds nuw i8, ptr %2005, i64 128
  %2010 = load <8 x double>, ptr %2009, align 64, !tbaa !26
  %2011 = getelementptr inbounds nuw i8, ptr %2005, i64 192
  %2012 = load <8 x double>, ptr %2011, align 64, !tbaa !26
  %2013 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %2012, <8 x double> %2010)
  %2014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %2013, <8 x double> %2008)
  %2015 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %2014, <8 x double> %2006)
  %2016 = icmp slt i64 %1978, %1996
  %2017 = fmul <8 x double> %1858, %2015
  %2018 = select i1 %2016, <8 x double> %2015, <8 x double> %2017
  br label %2019

2019:                                             ; preds = %2003, %1999
  %2020 = phi <8 x double> [ %2002, %1999 ], [ %2018, %2003 ]
  %2021 = icmp slt i64 %1978, %1996
  br i1 %2021, label %2028, label %2022

2022:                                             ; preds = %2019
  %2023 = fadd <8 x double> %1971, %1984
  %2024 = fmul <8 x double> %2023, splat (double 5.000000e-01)
  %2025 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2024, <8 x double> %1885, <8 x double> %1883)
  %2026 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2024, <8 x double> %2025, <8 x double> %1881)
  %2027 = fmul <8 x double> %2026, %2020
  br label %2038

2028:                                             ; preds = %2019
  %2029 = icmp slt i64 %1980, %1996
  br i1 %2029, label %2030, label %2032

2030:                                             ; preds = %2028
  %2031 = fmul <8 x double> %1930, %2020
  br label %2038

2032:                                             ; preds = %2028
  %2033 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1984, <8 x double> %1885, <8 x double> %1883)
  %2034 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1984, <8 x double> %2033, <8 x double> %1881)
  %2035 = fdiv <8 x double> %1968, %2034
  %2036 = fadd <8 x double> %1969, %2035
  %2037 = fdiv <8 x double> %2020, %2036
  br label %2038

2038:                                             ; preds = %2022, %2030, %2032
  %2039 = phi <8 x double> [ %2027, %2022 ], [ %2031, %2030 ], [ %2037, %2032 ]
  br i1 %1985, label %2044, label %2040

2040:                                             ; preds = %2038
  %2041 = getelementptr inbounds nuw <8 x double>, ptr %1940, i64 %1980
  %2042 = load <8 x double>, ptr %2041, align 64, !tbaa !26
  %2043 = fmul <8 x double> %1805, %2042
  br label %2044

2044:                                             ; preds = %2038, %2040
  %2045 = phi <8 x double> [ %2043, %2040 ], [ zeroinitializer, %2038 ]
  %2046 = fneg <8 x double> %2045
  %2047 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2046, <8 x double> %1977, <8 x double> %2039)
  %2048 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2045, <8 x double> %1994, <8 x double> %2039)
  %2049 = fadd <8 x double> %1979, %1995
  %2050 = fmul <8 x double> %2049, %2045
  br label %2054

2051:                                             ; preds = %1970
  %2052 = load <8 x double>, ptr %1897, align 64, !tbaa !26
  %2053 = load <8 x double>, ptr %1908, align 64, !tbaa !26
  br label %2054

2054:                                             ; preds = %2051, %2044
  %2055 = phi <8 x double> [ %2047, %2044 ], [ %2052, %2051 ]
  %2056 = phi <8 x double> [ %2048, %2044 ], [ %2053, %2051 ]
  %2057 = phi <8 x double> [ %2050, %2044 ], [ %1966, %2051 ]
  %2058 = phi <8 x double> [ %1984, %2044 ], [ %1971, %2051 ]
  %2059 = phi <8 x double> [ %1994, %2044 ], [ %1977, %2051 ]
  %2060 = phi <8 x double> [ %1995, %2044 ], [ %1979, %2051 ]
  %2061 = getelementptr inbounds nuw <8 x double>, ptr %1942, i64 %1978
  %2062 = load <8 x double>, ptr %2061, align 64, !tbaa !26
  %2063 = icmp slt i64 %1978, %1820
  %2064 = select i1 %2063, <8 x double> %1934, <8 x double> %1936
  %2065 = fmul <8 x double> %1725, %2064
  %2066 = fmul <8 x double> %2065, %2062
  %2067 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2066, <8 x double> %1977, <8 x double> %2055)
  %2068 = fadd <8 x double> %1973, %2067
  %2069 = fsub <8 x double> %2057, %1974
  %2070 = fneg <8 x double> %2066
  %2071 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2070, <8 x double> %1979, <8 x double> %2069)
  %2072 = getelementptr inbounds nuw <8 x double>, ptr %1944, i64 %1978
  %2073 = load <8 x double>, ptr %2072, align 64, !tbaa !26
  %2074 = fsub <8 x double> %2071, %2073
  %2075 = fneg <8 x double> %1972
  %2076 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2075, <8 x double> %1976, <8 x double> %2068)
  %2077 = fdiv <8 x double> splat (double 1.000000e+00), %2076
  %2078 = getelementptr inbounds nuw <8 x double>, ptr %1946, i64 %1978
  store <8 x double> %2074, ptr %2078, align 64, !tbaa !26
  %2079 = getelementptr inbounds nuw <8 x double>, ptr %1948, i64 %1978
  store <8 x double> %1972, ptr %2079, align 64, !tbaa !26
  %2080 = fadd <8 x double> %1972, %2056
  %2081 = fsub <8 x double> %2080, %2068
  %2082 = getelementptr inbounds nuw <8 x double>, ptr %1950, i64 %1978
  store <8 x double> %2081, ptr %2082, align 64, !tbaa !26
  %2083 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1972, <8 x double> %1975, <8 x double> %2074)
  %2084 = fmul <8 x double> %2083, %2077
  %2085 = getelementptr inbounds nuw <8 x double>, ptr %1952, i64 %1978
  store <8 x double> %2084, ptr %2085, align 64, !tbaa !26
  %2086 = fmul <8 x double> %2056, %2077
  %2087 = getelementptr inbounds nuw <8 x double>, ptr %1954, i64 %1978
  store <8 x double> %2086, ptr %2087, align 64, !tbaa !26
  %2088 = icmp eq i64 %1980, %1935
  br i1 %2088, label %2202, label %1970, !llvm.loop !90

2089:                                             ; preds = %1857
  %2090 = getelementptr inbounds nuw i8, ptr %1539, i64 1536
  %2091 = load <8 x double>, ptr %2090, align 64, !tbaa !26
  %2092 = load i64, ptr %141, align 16, !tbaa !21
  %2093 = fdiv <8 x double> %1817, %1726
  %2094 = fsub <8 x double> %1796, %2091
  %2095 = fmul <8 x double> %1725, %2094
  %2096 = fmul <8 x double> %1902, splat (double 5.000000e-01)
  %2097 = fmul <8 x double> %1904, splat (double 0x3FE5555555555555)
  %2098 = getelementptr inbounds nuw i8, ptr %1539, i64 8608
  %2099 = load ptr, ptr %2098, align 32, !tbaa !74
  %2100 = getelementptr inbounds nuw i8, ptr %1539, i64 8616
  %2101 = load ptr, ptr %2100, align 8, !tbaa !50
  %2102 = getelementptr inbounds nuw i8, ptr %1539, i64 8544
  %2103 = load ptr, ptr %2102, align 32, !tbaa !60
  %2104 = getelementptr inbounds nuw i8, ptr %1539, i64 8584
  %2105 = load ptr, ptr %2104, align 8, !tbaa !85
  %2106 = getelementptr inbounds nuw i8, ptr %1539, i64 8592
  %2107 = load ptr, ptr %2106, align 16, !tbaa !86
  %2108 = getelementptr inbounds nuw i8, ptr %1539, i64 8600
  %2109 = load ptr, ptr %2108, align 8, !tbaa !87
  %2110 = getelementptr inbounds nuw i8, ptr %1539, i64 8568
  %2111 = load ptr, ptr %2110, align 8, !tbaa !88
  %2112 = getelementptr inbounds nuw i8, ptr %1539, i64 8576
  %2113 = load ptr, ptr %2112, align 64, !tbaa !89
  %2114 = icmp sgt i64 %2092, 0
  br i1 %2114, label %2115, label %2202

2115:                                             ; preds = %2089
  %2116 = load <8 x double>, ptr %1873, align 64, !tbaa !26
  %2117 = fneg <8 x double> %2116
  %2118 = fmul <8 x double> %2116, %2117
  %2119 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2116, <8 x double> %2097, <8 x double> %2096)
  %2120 = fmul <8 x double> %2118, %2119
  %2121 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2116, <8 x double> %1904, <8 x double> %1902)
  %2122 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2116, <8 x double> %2121, <8 x double> %1900)
  %2123 = fmul <8 x double> %1805, splat (double -2.000000e+00)
  %2124 = fmul <8 x double> %2123, %1864
  %2125 = fmul <8 x double> %1864, %2124
  %2126 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1864, <8 x double> %2097, <8 x double> %2096)
  %2127 = fmul <8 x double> %2125, %2126
  %2128 = getelementptr inbounds nuw i8, ptr %1539, i64 8632
  br label %2129

2129:                                             ; preds = %2115, %2170
  %2130 = phi <8 x double> [ %2116, %2115 ], [ %2174, %2170 ]
  %2131 = phi <8 x double> [ zeroinitializer, %2115 ], [ %2171, %2170 ]
  %2132 = phi <8 x double> [ zeroinitializer, %2115 ], [ %2172, %2170 ]
  %2133 = phi <8 x double> [ zeroinitializer, %2115 ], [ %2173, %2170 ]
  %2134 = phi <8 x double> [ zeroinitializer, %2115 ], [ %2197, %2170 ]
  %2135 = phi <8 x double> [ zeroinitializer, %2115 ], [ %2199, %2170 ]
  %2136 = phi <8 x double> [ %2122, %2115 ], [ %2175, %2170 ]
  %2137 = phi i64 [ 0, %2115 ], [ %2139, %2170 ]
  %2138 = phi <8 x double> [ %2120, %2115 ], [ %2176, %2170 ]
  %2139 = add nuw nsw i64 %2137, 1
  %2140 = icmp slt i64 %2139, %2092
  br i1 %2140, label %2141, label %2167

2141:                                             ; preds = %2129
  %2142 = getelementptr inbounds nuw <8 x double>, ptr %1873, i64 %2139
  %2143 = load <8 x double>, ptr %2142, align 64, !tbaa !26
  %2144 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> %1904, <8 x double> %1902)
  %2145 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> %2144, <8 x double> %1900)
  %2146 = fneg <8 x double> %2143
  %2147 = fmul <8 x double> %2143, %2146
  %2148 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> %2097, <8 x double> %2096)
  %2149 = fmul <8 x double> %2147, %2148
  %2150 = fadd <8 x double> %2130, %2143
  %2151 = fmul <8 x double> %2150, splat (double 5.000000e-01)
  %2152 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2151, <8 x double> %1885, <8 x double> %1883)
  %2153 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2151, <8 x double> %2152, <8 x double> %1881)
  %2154 = load ptr, ptr %2128, align 8, !tbaa !36
  %2155 = getelementptr inbounds nuw <8 x double>, ptr %2154, i64 %2139
  %2156 = load <8 x double>, ptr %2155, align 64, !tbaa !26
  %2157 = fmul <8 x double> %2093, %2156
  %2158 = fmul <8 x double> %2157, %2153
  %2159 = getelementptr inbounds nuw <8 x double>, ptr %2099, i64 %2139
  %2160 = load <8 x double>, ptr %2159, align 64, !tbaa !26
  %2161 = fmul <8 x double> %1805, %2160
  %2162 = fneg <8 x double> %2161
  %2163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2162, <8 x double> %2136, <8 x double> %2158)
  %2164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2161, <8 x double> %2145, <8 x double> %2158)
  %2165 = fadd <8 x double> %2138, %2149
  %2166 = fmul <8 x double> %2165, %2161
  br label %2170

2167:                                             ; preds = %2129
  %2168 = load <8 x double>, ptr %1897, align 64, !tbaa !26
  %2169 = load <8 x double>, ptr %1908, align 64, !tbaa !26
  br label %2170

2170:                                             ; preds = %2167, %2141
  %2171 = phi <8 x double> [ %2163, %2141 ], [ %2168, %2167 ]
  %2172 = phi <8 x double> [ %2164, %2141 ], [ %2169, %2167 ]
  %2173 = phi <8 x double> [ %2166, %2141 ], [ %2127, %2167 ]
  %2174 = phi <8 x double> [ %2143, %2141 ], [ %2130, %2167 ]
  %2175 = phi <8 x double> [ %2145, %2141 ], [ %2136, %2167 ]
  %2176 = phi <8 x double> [ %2149, %2141 ], [ %2138, %2167 ]
  %2177 = getelementptr inbounds nuw <8 x double>, ptr %2101, i64 %2137
  %2178 = load <8 x double>, ptr %2177, align 64, !tbaa !26
  %2179 = fmul <8 x double> %2095, %2178
  %2180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2179, <8 x double> %2136, <8 x double> %2171)
  %2181 = fadd <8 x double> %2132, %2180
  %2182 = fsub <8 x double> %2173, %2133
  %2183 = fneg <8 x double> %2179
  %2184 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2183, <8 x double> %2138, <8 x double> %2182)
  %2185 = getelementptr inbounds nuw <8 x double>, ptr %2103, i64 %2137
  %2186 = load <8 x double>, ptr %2185, align 64, !tbaa !26
  %2187 = fsub <8 x double> %2184, %2186
  %2188 = fneg <8 x double> %2131
  %2189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2188, <8 x double> %2135, <8 x double> %2181)
  %2190 = fdiv <8 x double> splat (double 1.000000e+00), %2189
  %2191 = getelementptr inbounds nuw <8 x double>, ptr %2105, i64 %2137
  store <8 x double> %2187, ptr %2191, align 64, !tbaa !26
  %2192 = getelementptr inbounds nuw <8 x double>, ptr %2107, i64 %2137
  store <8 x double> %2131, ptr %2192, align 64, !tbaa !26
  %2193 = fadd <8 x double> %2131, %2172
  %2194 = fsub <8 x double> %2193, %2181
  %2195 = getelementptr inbounds nuw <8 x double>, ptr %2109, i64 %2137
  store <8 x double> %2194, ptr %2195, align 64, !tbaa !26
  %2196 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2131, <8 x double> %2134, <8 x double> %2187)
  %2197 = fmul <8 x double> %2196, %2190
  %2198 = getelementptr inbounds nuw <8 x double>, ptr %2111, i64 %2137
  store <8 x double> %2197, ptr %2198, align 64, !tbaa !26
  %2199 = fmul <8 x double> %2172, %2190
  %2200 = getelementptr inbounds nuw <8 x double>, ptr %2113, i64 %2137
  store <8 x double> %2199, ptr %2200, align 64, !tbaa !26
  %2201 = icmp eq i64 %2139, %2092
  br i1 %2201, label %2202, label %2129, !llvm.loop !91

2202:                                             ; preds = %2054, %2170, %1928, %2089
  %2203 = getelementptr inbounds nuw i8, ptr %1539, i64 8128
  store <8 x double> splat (double 1.000000e+09), ptr %2203, align 64, !tbaa !26
  %2204 = getelementptr inbounds nuw i8, ptr %1539, i64 8568
  %2205 = load ptr, ptr %2204, align 8, !tbaa !88
  %2206 = load i64, ptr %141, align 16, !tbaa !21
  %2207 = add nsw i64 %2206, -1
  %2208 = getelementptr inbounds <8 x double>, ptr %2205, i64 %2207
  %2209 = load <8 x double>, ptr %2208, align 64, !tbaa !26
  %2210 = getelementptr inbounds nuw i8, ptr %1539, i64 8576
  %2211 = load ptr, ptr %2210, align 64, !tbaa !89
  %2212 = getelementptr inbounds <8 x double>, ptr %2211, i64 %2207
  %2213 = load <8 x double>, ptr %2212, align 64, !tbaa !26
  %2214 = load <8 x double>, ptr %1897, align 64, !tbaa !26
  %2215 = fmul <8 x double> %2209, %2214
  %2216 = fsub <8 x double> splat (double 1.000000e+00), %2213
  %2217 = fmul <8 x double> %2214, %2216
  %2218 = load <8 x double>, ptr %1922, align 64, !tbaa !26
  %2219 = load <8 x double>, ptr %1736, align 64, !tbaa !26
  %2220 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2218, <8 x double> %2219, <8 x double> %2215)
  %2221 = load <8 x double>, ptr %1772, align 64, !tbaa !26
  %2222 = fsub <8 x double> %2220, %2221
  %2223 = fadd <8 x double> %2217, %2218
  %2224 = load <8 x double>, ptr %1769, align 64, !tbaa !26
  %2225 = fadd <8 x double> %2223, %2224
  %2226 = load <8 x i64>, ptr %1755, align 64, !tbaa !26
  %2227 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2226)
  %2228 = icmp eq i64 %2227, 0
  %2229 = load i64, ptr %142, align 8, !tbaa !22
  br i1 %2228, label %2230, label %2245

2230:                                             ; preds = %2202
  %2231 = icmp slt i64 %2229, 0
  br i1 %2231, label %2236, label %2232

2232:                                             ; preds = %2230
  %2233 = getelementptr inbounds nuw i8, ptr %1539, i64 1408
  %2234 = getelementptr inbounds nuw i8, ptr %1539, i64 8688
  %2235 = load <8 x double>, ptr %2233, align 64, !tbaa !26
  br label %2238

2236:                                             ; preds = %2238, %2230
  %2237 = getelementptr inbounds nuw i8, ptr %1539, i64 6208
  store <8 x double> %2222, ptr %2237, align 64, !tbaa !26
  br label %2372

2238:                                             ; preds = %2232, %2238
  %2239 = phi i64 [ 0, %2232 ], [ %2242, %2238 ]
  %2240 = load ptr, ptr %2234, align 16, !tbaa !92
  %2241 = getelementptr inbounds nuw <8 x double>, ptr %2240, i64 %2239
  store <8 x double> %2235, ptr %2241, align 64, !tbaa !26
  %2242 = add nuw nsw i64 %2239, 1
  %2243 = load i64, ptr %142, align 8, !tbaa !22
  %2244 = icmp slt i64 %2239, %2243
  br i1 %2244, label %2238, label %2236, !llvm.loop !93

2245:                                             ; preds = %2202
  %2246 = load <8 x double>, ptr %1759, align 64, !tbaa !26
  %2247 = load <8 x double>, ptr %1785, align 64, !tbaa !26
  %2248 = getelementptr inbounds nuw i8, ptr %1539, i64 1280
  %2249 = load <8 x double>, ptr %2248, align 64, !tbaa !26
  %2250 = fmul <8 x double> %2247, %2249
  %2251 = load <8 x double>, ptr %1539, align 64, !tbaa !26
  %2252 = fsub <8 x double> %2251, %2246
  %2253 = sitofp i64 %2229 to double
  %2254 = insertelement <8 x double> poison, double %2253, i64 0
  %2255 = shufflevector <8 x double> %2254, <8 x double> poison, <8 x i32> zeroinitializer
  %2256 = fdiv <8 x double> %2252, %2255
  %2257 = load <8 x double>, ptr %1925, align 64, !tbaa !26
  %2258 = load <8 x double>, ptr %1927, align 64, !tbaa !26
  %2259 = getelementptr inbounds nuw i8, ptr %1539, i64 1408
  %2260 = load <8 x double>, ptr %2259, align 64, !tbaa !26
  %2261 = getelementptr inbounds nuw i8, ptr %1539, i64 8688
  %2262 = load ptr, ptr %2261, align 16, !tbaa !92
  %2263 = getelementptr inbounds <8 x double>, ptr %2262, i64 %2229
  store <8 x double> %2260, ptr %2263, align 64, !tbaa !26
  %2264 = icmp sgt i64 %2229, 0
  br i1 %2264, label %2265, label %2356

2265:                                             ; preds = %2245
  %2266 = fneg <8 x double> %2250
  %2267 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2266, <8 x double> %2258, <8 x double> %2257)
  %2268 = fsub <8 x double> splat (double 1.000000e+00), %2258
  %2269 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2250, <8 x double> %2268, <8 x double> %2257)
  %2270 = getelementptr inbounds nuw i8, ptr %1539, i64 8696
  %2271 = getelementptr inbounds nuw i8, ptr %1539, i64 8704
  %2272 = getelementptr inbounds nuw i8, ptr %1539, i64 768
  %2273 = fmul <8 x double> %2250, splat (double -5.000000e-01)
  %2274 = getelementptr inbounds nuw i8, ptr %1539, i64 8664
  %2275 = getelementptr inbounds nuw i8, ptr %1539, i64 8672
  %2276 = getelementptr inbounds nuw i8, ptr %1539, i64 8680
  br label %2277

2277:                                             ; preds = %2265, %2331
  %2278 = phi <8 x double> [ %2269, %2265 ], [ %2333, %2331 ]
  %2279 = phi <8 x double> [ %2267, %2265 ], [ %2334, %2331 ]
  %2280 = phi <8 x double> [ %2219, %2265 ], [ %2349, %2331 ]
  %2281 = phi <8 x double> [ zeroinitializer, %2265 ], [ %2352, %2331 ]
  %2282 = phi <8 x double> [ %2260, %2265 ], [ %2295, %2331 ]
  %2283 = phi i64 [ %2229, %2265 ], [ %2284, %2331 ]
  %2284 = add nsw i64 %2283, -1
  %2285 = uitofp nneg i64 %2284 to double
  %2286 = insertelement <8 x double> poison, double %2285, i64 0
  %2287 = shufflevector <8 x double> %2286, <8 x double> poison, <8 x i32> zeroinitializer
  %2288 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2287, <8 x double> %2256, <8 x double> %2246)
  %2289 = load <8 x double>, ptr %1786, align 64, !tbaa !26
  %2290 = load <8 x double>, ptr %1788, align 64, !tbaa !26
  %2291 = load <8 x double>, ptr %1790, align 64, !tbaa !26
  %2292 = load <8 x double>, ptr %1792, align 64, !tbaa !26
  %2293 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2288, <8 x double> %2292, <8 x double> %2291)
  %2294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2288, <8 x double> %2293, <8 x double> %2290)
  %2295 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2288, <8 x double> %2294, <8 x double> %2289)
  %2296 = load <8 x double>, ptr %1764, align 64, !tbaa !26
  %2297 = load <8 x double>, ptr %1747, align 64, !tbaa !26
  %2298 = load ptr, ptr %2270, align 8, !tbaa !51
  %2299 = getelementptr inbounds nuw <8 x double>, ptr %2298, i64 %2284
  %2300 = load <8 x double>, ptr %2299, align 64, !tbaa !26
  %2301 = fmul <8 x double> %2297, %2300
  %2302 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2296, <8 x double> %2295, <8 x double> %2301)
  %2303 = load <8 x double>, ptr %1750, align 64, !tbaa !26
  %2304 = load ptr, ptr %2271, align 64, !tbaa !61
  %2305 = getelementptr inbounds nuw <8 x double>, ptr %2304, i64 %2284
  %2306 = load <8 x double>, ptr %2305, align 64, !tbaa !26
  %2307 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2303, <8 x double> %2306, <8 x double> %2302)
  %2308 = fmul <8 x double> %2307, splat (double 5.000000e-01)
  %2309 = icmp eq i64 %2283, 1
  br i1 %2309, label %2325, label %2310

2310:                                             ; preds = %2277
  %2311 = load <8 x double>, ptr %2272, align 64, !tbaa !26
  %2312 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2308, <8 x double> %2311, <8 x double> %2273)
  %2313 = load <8 x double>, ptr %1871, align 64, !tbaa !26
  %2314 = fmul <8 x double> %2255, %2313
  %2315 = load <8 x double>, ptr %1807, align 64, !tbaa !26
  %2316 = load <8 x double>, ptr %1809, align 64, !tbaa !26
  %2317 = load <8 x double>, ptr %1811, align 64, !tbaa !26
  %2318 = load <8 x double>, ptr %1813, align 64, !tbaa !26
  %2319 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2288, <8 x double> %2318, <8 x double> %2317)
  %2320 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2288, <8 x double> %2319, <8 x double> %2316)
  %2321 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2288, <8 x double> %2320, <8 x double> %2315)
  %2322 = fmul <8 x double> %2314, %2321
  %2323 = fsub <8 x double> %2322, %2312
  %2324 = fadd <8 x double> %2312, %2322
  br label %2331

2325:                                             ; preds = %2277
  %2326 = load <8 x double>, ptr %1922, align 64, !tbaa !26
  %2327 = load <8 x double>, ptr %2272, align 64, !tbaa !26
  %2328 = fmul <8 x double> %2308, splat (double -2.000000e+00)
  %2329 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2328, <8 x double> %2327, <8 x double> %2326)
  %2330 = fadd <8 x double> %2250, %2329
  br label %2331

2331:                                             ; preds = %2325, %2310
  %2332 = phi <8 x double> [ %2311, %2310 ], [ %2327, %2325 ]
  %2333 = phi <8 x double> [ %2323, %2310 ], [ %2330, %2325 ]
  %2334 = phi <8 x double> [ %2324, %2310 ], [ %2326, %2325 ]
  %2335 = fsub <8 x double> %2282, %2295
  %2336 = fmul <8 x double> %2296, %2335
  %2337 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2336, <8 x double> %2332, <8 x double> %2278)
  %2338 = fadd <8 x double> %2334, %2337
  %2339 = fneg <8 x double> %2279
  %2340 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2339, <8 x double> %2281, <8 x double> %2338)
  %2341 = fdiv <8 x double> splat (double 1.000000e+00), %2340
  %2342 = load ptr, ptr %2261, align 16, !tbaa !92
  %2343 = getelementptr inbounds nuw <8 x double>, ptr %2342, i64 %2284
  store <8 x double> %2295, ptr %2343, align 64, !tbaa !26
  %2344 = load ptr, ptr %2274, align 8, !tbaa !64
  %2345 = getelementptr inbounds nuw <8 x double>, ptr %2344, i64 %2284
  %2346 = load <8 x double>, ptr %2345, align 64, !tbaa !26
  %2347 = fneg <8 x double> %2346
  %2348 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2279, <8 x double> %2280, <8 x double> %2347)
  %2349 = fmul <8 x double> %2341, %2348
  %2350 = load ptr, ptr %2275, align 32, !tbaa !94
  %2351 = getelementptr inbounds nuw <8 x double>, ptr %2350, i64 %2284
  store <8 x double> %2349, ptr %2351, align 64, !tbaa !26
  %2352 = fmul <8 x double> %2333, %2341
  %2353 = load ptr, ptr %2276, align 8, !tbaa !95
  %2354 = getelementptr inbounds nuw <8 x double>, ptr %2353, i64 %2284
  store <8 x double> %2352, ptr %2354, align 64, !tbaa !26
  %2355 = icmp samesign ugt i64 %2283, 1
  br i1 %2355, label %2277, label %2356, !llvm.loop !96

2356:                                             ; preds = %2331, %2245
  %2357 = load <8 x i64>, ptr %1755, align 64, !tbaa !26
  %2358 = load <8 x double>, ptr %1922, align 64, !tbaa !26
  %2359 = getelementptr inbounds nuw i8, ptr %1539, i64 8672
  %2360 = load ptr, ptr %2359, align 32, !tbaa !94
  %2361 = load <8 x double>, ptr %2360, align 64, !tbaa !26
  %2362 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2358, <8 x double> %2361, <8 x double> %2215)
  %2363 = icmp eq <8 x i64> %2357, zeroinitializer
  %2364 = select <8 x i1> %2363, <8 x double> %2222, <8 x double> %2362
  %2365 = getelementptr inbounds nuw i8, ptr %1539, i64 6208
  store <8 x double> %2364, ptr %2365, align 64, !tbaa !26
  %2366 = getelementptr inbounds nuw i8, ptr %1539, i64 8680
  %2367 = load ptr, ptr %2366, align 8, !tbaa !95
  %2368 = load <8 x double>, ptr %2367, align 64, !tbaa !26
  %2369 = fsub <8 x double> splat (double 1.000000e+00), %2368
  %2370 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2358, <8 x double> %2369, <8 x double> %2217)
  %2371 = select <8 x i1> %2363, <8 x double> %2225, <8 x double> %2370
  br label %2372

2372:                                             ; preds = %2236, %2356
  %2373 = phi <8 x double> [ %2225, %2236 ], [ %2371, %2356 ]
  %2374 = getelementptr inbounds nuw i8, ptr %1539, i64 6272
  store <8 x double> %2373, ptr %2374, align 64, !tbaa !26
  %2375 = add nuw nsw i64 %1537, 1
  %2376 = load i64, ptr %178, align 8, !tbaa !20
  %2377 = icmp slt i64 %2375, %2376
  br i1 %2377, label %1536, label %1533, !llvm.loop !97

2378:                                             ; preds = %2479, %1524, %1533
  %2379 = phi <8 x double> [ %1534, %1533 ], [ %1525, %1524 ], [ %1534, %2479 ]
  %2380 = phi i64 [ %2376, %1533 ], [ %1519, %1524 ], [ %2480, %2479 ]
  %2381 = fcmp ogt <8 x double> %2379, zeroinitializer
  %2382 = bitcast <8 x i1> %2381 to i8
  %2383 = icmp eq i8 %2382, 0
  br i1 %2383, label %2566, label %2483

2384:                                             ; preds = %1533, %2479
  %2385 = phi i64 [ %2480, %2479 ], [ %2376, %1533 ]
  %2386 = phi i64 [ %2481, %2479 ], [ 0, %1533 ]
  %2387 = load ptr, ptr %151, align 8, !tbaa !28
  %2388 = getelementptr inbounds nuw %struct.Piece, ptr %2387, i64 %2386
  %2389 = getelementptr inbounds nuw i8, ptr %2388, i64 8448
  %2390 = load <8 x i64>, ptr %2389, align 64, !tbaa !26
  %2391 = getelementptr inbounds nuw i8, ptr %2388, i64 2240
  %2392 = load <8 x double>, ptr %2391, align 64, !tbaa !26
  %2393 = fcmp ogt <8 x double> %2392, zeroinitializer
  %2394 = select <8 x i1> %2393, <8 x i64> %2390, <8 x i64> zeroinitializer
  %2395 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2394)
  %2396 = icmp eq i64 %2395, 0
  br i1 %2396, label %2479, label %2397

2397:                                             ; preds = %2384
  %2398 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2399 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2398, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2400 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2398, <8 x double> %2399, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2401 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2402 = getelementptr inbounds nuw i8, ptr %2388, i64 6208
  %2403 = load <8 x double>, ptr %2402, align 64, !tbaa !26
  %2404 = getelementptr inbounds nuw i8, ptr %2388, i64 6272
  %2405 = load <8 x double>, ptr %2404, align 64, !tbaa !26
  %2406 = fdiv <8 x double> %2403, %2405
  %2407 = fcmp olt <8 x double> %2406, %2398
  %2408 = select <8 x i1> %2407, <8 x double> %2406, <8 x double> %2398
  %2409 = getelementptr inbounds nuw i8, ptr %2388, i64 3584
  %2410 = load <8 x double>, ptr %2409, align 64, !tbaa !26
  %2411 = fcmp olt <8 x double> %2410, %2408
  %2412 = select <8 x i1> %2411, <8 x double> %2410, <8 x double> %2408
  %2413 = fneg <8 x double> %2405
  %2414 = getelementptr inbounds nuw i8, ptr %2388, i64 7488
  %2415 = load <8 x double>, ptr %2414, align 64, !tbaa !26
  br label %2419

2416:                                             ; preds = %2419
  %2417 = getelementptr inbounds nuw i8, ptr %2388, i64 6336
  store <8 x double> %2470, ptr %2417, align 64, !tbaa !26
  %2418 = load i64, ptr %178, align 8, !tbaa !20
  br label %2479

2419:                                             ; preds = %2397, %2419
  %2420 = phi <8 x i64> [ %2394, %2397 ], [ %2473, %2419 ]
  %2421 = phi i32 [ 0, %2397 ], [ %2474, %2419 ]
  %2422 = phi <8 x double> [ %2412, %2397 ], [ %2470, %2419 ]
  %2423 = fadd <8 x double> %2422, splat (double 2.731500e+02)
  %2424 = fcmp ogt <8 x double> %2422, zeroinitializer
  %2425 = select <8 x i1> %2424, <8 x double> %2422, <8 x double> zeroinitializer
  %2426 = fadd <8 x double> %2425, splat (double 2.731500e+02)
  %2427 = fadd <8 x double> %2426, splat (double 0xC08451671D164BD4)
  %2428 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2427
  %2429 = fsub <8 x double> %2426, %2428
  %2430 = fadd <8 x double> %2429, splat (double 0x40923C3565924845)
  %2431 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> %2430, <8 x double> splat (double 0xC12619EA558539E6))
  %2432 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2433 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> %2432, <8 x double> splat (double 0xC148A99584203885))
  %2434 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2435 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> %2434, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2436 = fmul <8 x double> %2435, splat (double 2.000000e+00)
  %2437 = fmul <8 x double> %2431, splat (double 4.000000e+00)
  %2438 = fneg <8 x double> %2435
  %2439 = fmul <8 x double> %2437, %2438
  %2440 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2433, <8 x double> %2433, <8 x double> %2439)
  %2441 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2440)
  %2442 = fsub <8 x double> %2441, %2433
  %2443 = fdiv <8 x double> %2436, %2442
  %2444 = fmul <8 x double> %2443, %2443
  %2445 = fmul <8 x double> %2444, splat (double 1.000000e+06)
  %2446 = fmul <8 x double> %2444, %2445
  %2447 = fmul <8 x double> %2423, splat (double 4.615260e+02)
  %2448 = fdiv <8 x double> %2446, %2447
  %2449 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2413, <8 x double> %2422, <8 x double> %2403)
  %2450 = fsub <8 x double> %2448, %2401
  %2451 = fcmp ogt <8 x double> %2450, zeroinitializer
  %2452 = select <8 x i1> %2451, <8 x double> %2450, <8 x double> zeroinitializer
  %2453 = fmul <8 x double> %2400, %2452
  %2454 = fdiv <8 x double> %2453, %2415
  %2455 = fsub <8 x double> %2449, %2454
  %2456 = fmul <8 x double> %2400, %2448
  %2457 = fdiv <8 x double> %2400, %2447
  %2458 = fadd <8 x double> %2457, splat (double -1.000000e+00)
  %2459 = fmul <8 x double> %2458, %2456
  %2460 = fdiv <8 x double> %2459, %2423
  %2461 = fdiv <8 x double> %2460, %2415
  %2462 = fcmp ule <8 x double> %2448, %2401
  %2463 = select <8 x i1> %2462, <8 x double> zeroinitializer, <8 x double> %2461
  %2464 = fsub <8 x double> %2413, %2463
  %2465 = fdiv <8 x double> %2455, %2464
  %2466 = fsub <8 x double> %2422, %2465
  %2467 = fcmp olt <8 x double> %2466, %2408
  %2468 = select <8 x i1> %2467, <8 x double> %2466, <8 x double> %2408
  %2469 = icmp eq <8 x i64> %2420, zeroinitializer
  %2470 = select <8 x i1> %2469, <8 x double> %2422, <8 x double> %2468
  %2471 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2465)
  %2472 = fcmp oge <8 x double> %2471, splat (double 1.000000e-05)
  %2473 = select <8 x i1> %2472, <8 x i64> %2420, <8 x i64> zeroinitializer
  %2474 = add nuw nsw i32 %2421, 1
  %2475 = icmp samesign ult i32 %2421, 7
  %2476 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2473)
  %2477 = icmp ne i64 %2476, 0
  %2478 = select i1 %2475, i1 %2477, i1 false
  br i1 %2478, label %2419, label %2416, !llvm.loop !98

2479:                                             ; preds = %2384, %2416
  %2480 = phi i64 [ %2385, %2384 ], [ %2418, %2416 ]
  %2481 = add nuw nsw i64 %2386, 1
  %2482 = icmp slt i64 %2481, %2480
  br i1 %2482, label %2384, label %2378, !llvm.loop !99

2483:                                             ; preds = %2378
  %2484 = sext <8 x i1> %2381 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2484, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %2485 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %2486 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2487 = fadd <8 x double> %2485, %2486
  store <8 x double> %2487, ptr %6, align 64, !tbaa !26
  %2488 = load ptr, ptr %191, align 8
  %2489 = load ptr, ptr %193, align 8
  %2490 = load ptr, ptr %194, align 8
  br label %2491

2491:                                             ; preds = %2561, %2483
  %2492 = phi i64 [ 0, %2483 ], [ %2562, %2561 ]
  %2493 = getelementptr inbounds nuw i64, ptr %4, i64 %2492
  %2494 = load i64, ptr %2493, align 8, !tbaa !30
  %2495 = icmp eq i64 %2494, 0
  br i1 %2495, label %2561, label %2496

2496:                                             ; preds = %2491
  %2497 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %2492
  %2498 = load i64, ptr %2497, align 8, !tbaa !30
  %2499 = shl nsw i64 %2498, 1
  %2500 = or disjoint i64 %2499, 1
  %2501 = getelementptr inbounds i64, ptr %2488, i64 %2500
  %2502 = load i64, ptr %2501, align 8, !tbaa !30
  %2503 = shl nuw nsw i64 %2492, 1
  %2504 = or disjoint i64 %2503, 1
  %2505 = getelementptr inbounds nuw [16 x i64], ptr %192, i64 0, i64 %2504
  %2506 = getelementptr inbounds i64, ptr %2490, i64 %2500
  %2507 = load i64, ptr %2506, align 8, !tbaa !30
  %2508 = shl nsw i64 %2507, 4
  %2509 = getelementptr inbounds i8, ptr %2489, i64 %2508
  %2510 = getelementptr inbounds nuw double, ptr %6, i64 %2492
  %2511 = load double, ptr %2510, align 8, !tbaa !44
  %2512 = load i64, ptr %2505, align 8, !tbaa !30
  %2513 = getelementptr i8, ptr %2509, i64 -16
  %2514 = icmp sgt i64 %2512, 0
  br i1 %2514, label %2515, label %2524

2515:                                             ; preds = %2496, %2521
  %2516 = phi i64 [ %2522, %2521 ], [ %2512, %2496 ]
  %2517 = shl i64 %2516, 4
  %2518 = getelementptr i8, ptr %2513, i64 %2517
  %2519 = load double, ptr %2518, align 8, !tbaa !44
  %2520 = fcmp ugt double %2511, %2519
  br i1 %2520, label %2524, label %2521

2521:                                             ; preds = %2515
  %2522 = add nsw i64 %2516, -1
  store i64 %2522, ptr %2505, align 8, !tbaa !30
  %2523 = icmp sgt i64 %2516, 1
  br i1 %2523, label %2515, label %2524, !llvm.loop !79

2524:                                             ; preds = %2521, %2515, %2496
  %2525 = phi i64 [ %2512, %2496 ], [ 0, %2521 ], [ %2516, %2515 ]
  %2526 = icmp slt i64 %2525, %2502
  br i1 %2526, label %2527, label %2536

2527:                                             ; preds = %2524, %2533
  %2528 = phi i64 [ %2534, %2533 ], [ %2525, %2524 ]
  %2529 = shl nsw i64 %2528, 4
  %2530 = getelementptr inbounds i8, ptr %2509, i64 %2529
  %2531 = load double, ptr %2530, align 8, !tbaa !44
  %2532 = fcmp ule double %2511, %2531
  br i1 %2532, label %2541, label %2533

2533:                                             ; preds = %2527
  %2534 = add i64 %2528, 1
  store i64 %2534, ptr %2505, align 8, !tbaa !30
  %2535 = icmp eq i64 %2534, %2502
  br i1 %2535, label %2536, label %2527, !llvm.loop !80

2536:                                             ; preds = %2533, %2524
  %2537 = shl i64 %2502, 4
  %2538 = getelementptr i8, ptr %2509, i64 %2537
  %2539 = getelementptr i8, ptr %2538, i64 -8
  %2540 = load double, ptr %2539, align 8, !tbaa !44
  br label %2558

2541:                                             ; preds = %2527
  %2542 = shl nsw i64 %2528, 1
  %2543 = or disjoint i64 %2542, 1
  %2544 = getelementptr inbounds double, ptr %2509, i64 %2543
  %2545 = load double, ptr %2544, align 8, !tbaa !44
  %2546 = icmp sgt i64 %2528, 0
  br i1 %2546, label %2547, label %2558

2547:                                             ; preds = %2541
  %2548 = getelementptr inbounds nuw i8, ptr %2509, i64 %2529
  %2549 = getelementptr i8, ptr %2548, i64 -8
  %2550 = load double, ptr %2549, align 8, !tbaa !44
  %2551 = getelementptr i8, ptr %2548, i64 -16
  %2552 = load double, ptr %2551, align 8, !tbaa !44
  %2553 = fsub double %2511, %2552
  %2554 = fsub double %2531, %2552
  %2555 = fdiv double %2553, %2554
  %2556 = fsub double %2545, %2550
  %2557 = tail call double @llvm.fmuladd.f64(double %2555, double %2556, double %2550)
  br label %2558

2558:                                             ; preds = %2547, %2541, %2536
  %2559 = phi double [ %2557, %2547 ], [ %2545, %2541 ], [ %2540, %2536 ]
  %2560 = getelementptr inbounds nuw double, ptr %5, i64 %2492
  store double %2559, ptr %2560, align 8, !tbaa !44
  br label %2561

2561:                                             ; preds = %2558, %2491
  %2562 = add nuw nsw i64 %2492, 1
  %2563 = icmp eq i64 %2562, 8
  br i1 %2563, label %2564, label %2491, !llvm.loop !81

2564:                                             ; preds = %2561
  %2565 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2566

2566:                                             ; preds = %2378, %2564
  %2567 = phi <8 x double> [ %2565, %2564 ], [ zeroinitializer, %2378 ]
  %2568 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2569 = fcmp ogt <8 x double> %2568, zeroinitializer
  %2570 = sext <8 x i1> %2569 to <8 x i64>
  %2571 = xor <8 x i64> %2570, splat (i64 -1)
  %2572 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2573 = fcmp oeq <8 x double> %2572, splat (double 1.000000e+00)
  %2574 = fcmp oeq <8 x double> %2572, splat (double 2.000000e+00)
  %2575 = or <8 x i1> %2573, %2574
  %2576 = select <8 x i1> %2575, <8 x i64> %2571, <8 x i64> zeroinitializer
  %2577 = xor <8 x i64> %2576, %2570
  %2578 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2579 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2580 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2581 = icmp eq <8 x i64> %2577, splat (i64 -1)
  %2582 = select <8 x i1> %2581, <8 x double> %2580, <8 x double> %2579
  %2583 = bitcast <8 x i1> %2569 to i8
  %2584 = icmp eq i8 %2583, 0
  br i1 %2584, label %2616, label %2585

2585:                                             ; preds = %2566
  %2586 = select <8 x i1> %2569, <8 x double> %2567, <8 x double> %2582
  %2587 = fmul <8 x double> %2586, splat (double 0x3EB0C6F7A0B5ED8D)
  %2588 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2587)
  %2589 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2588)
  %2590 = fmul <8 x double> %2589, %2589
  %2591 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2589, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2590)
  %2592 = fadd <8 x double> %2591, splat (double 0x402DD4891DBECC6B)
  %2593 = fmul <8 x double> %2589, splat (double 0x40C77A698FD9BCCA)
  %2594 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2590, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2593)
  %2595 = fadd <8 x double> %2594, splat (double 0xC0B2D7440748F0B3)
  %2596 = fmul <8 x double> %2589, splat (double 0xC148A99584203885)
  %2597 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2590, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2596)
  %2598 = fadd <8 x double> %2597, splat (double 0x4118B9E59F2691E5)
  %2599 = fmul <8 x double> %2598, splat (double 2.000000e+00)
  %2600 = fneg <8 x double> %2595
  %2601 = fmul <8 x double> %2592, splat (double 4.000000e+00)
  %2602 = fneg <8 x double> %2598
  %2603 = fmul <8 x double> %2601, %2602
  %2604 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2595, <8 x double> %2595, <8 x double> %2603)
  %2605 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2604)
  %2606 = fsub <8 x double> %2600, %2605
  %2607 = fdiv <8 x double> %2599, %2606
  %2608 = fadd <8 x double> %2607, splat (double 0x408451671D164BD4)
  %2609 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2607, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2610 = fmul <8 x double> %2609, splat (double -4.000000e+00)
  %2611 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2608, <8 x double> %2608, <8 x double> %2610)
  %2612 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2611)
  %2613 = fsub <8 x double> %2608, %2612
  %2614 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2613, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2615 = select <8 x i1> %2569, <8 x double> %2614, <8 x double> %2578
  br label %2616

2616:                                             ; preds = %2585, %2566
  %2617 = phi <8 x double> [ %2586, %2585 ], [ %2582, %2566 ]
  %2618 = phi <8 x double> [ %2615, %2585 ], [ %2578, %2566 ]
  %2619 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2620 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2621 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2622 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %2623 = fmul <8 x double> %2621, %2622
  %2624 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2619, <8 x double> %2620, <8 x double> %2623)
  %2625 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %2626 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2627 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2628 = fneg <8 x double> %2624
  %2629 = fmul <8 x double> %2627, %2628
  %2630 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2625, <8 x double> %2626, <8 x double> %2629)
  %2631 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2632 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2627, <8 x double> %2631, <8 x double> %2625)
  %2633 = fdiv <8 x double> %2630, %2632
  %2634 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2635 = select <8 x i1> %2581, <8 x double> %2634, <8 x double> %2579
  store <8 x double> %2635, ptr %207, align 64, !tbaa !26
  %2636 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %2637 = select <8 x i1> %2581, <8 x double> %2636, <8 x double> %2633
  store <8 x double> %2637, ptr %208, align 64, !tbaa !26
  store <8 x double> %2617, ptr %201, align 64, !tbaa !26
  %2638 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %2639 = and <8 x i64> %2638, %2576
  %2640 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2639)
  %2641 = icmp eq i64 %2640, 0
  br i1 %2641, label %3189, label %2642

2642:                                             ; preds = %2616
  %2643 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %2644 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %2645 = fmul <8 x double> %2621, %2644
  %2646 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2619, <8 x double> %2643, <8 x double> %2645)
  %2647 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %2648 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2649 = fdiv <8 x double> %2647, %2648
  %2650 = fmul <8 x double> %2579, splat (double 3.000000e-01)
  %2651 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %2652 = fadd <8 x double> %2579, %2651
  %2653 = fadd <8 x double> %2652, splat (double 2.000000e+05)
  %2654 = fmul <8 x double> %2648, splat (double 2.870530e+02)
  %2655 = fdiv <8 x double> %2579, %2654
  %2656 = fcmp ogt <8 x double> %2617, %2650
  %2657 = select <8 x i1> %2656, <8 x double> %2617, <8 x double> %2650
  %2658 = fcmp olt <8 x double> %2657, %2653
  %2659 = select <8 x i1> %2658, <8 x double> %2657, <8 x double> %2653
  %2660 = icmp eq <8 x i64> %2576, zeroinitializer
  %2661 = select <8 x i1> %2660, <8 x double> %2617, <8 x double> %2659
  %2662 = fdiv <8 x double> %2635, splat (double 2.870530e+02)
  %2663 = fmul <8 x double> %2655, splat (double 2.000000e+00)
  %2664 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2663)
  br label %2665

2665:                                             ; preds = %2971, %2642
  %2666 = phi <8 x double> [ %2618, %2642 ], [ %2700, %2971 ]
  %2667 = phi <8 x double> [ %2650, %2642 ], [ %3128, %2971 ]
  %2668 = phi <8 x double> [ %2653, %2642 ], [ %3125, %2971 ]
  %2669 = phi <8 x i64> [ %2639, %2642 ], [ %3144, %2971 ]
  %2670 = phi i32 [ 0, %2642 ], [ %3149, %2971 ]
  %2671 = phi <8 x double> [ %2661, %2642 ], [ %3146, %2971 ]
  %2672 = fmul <8 x double> %2671, splat (double 0x3EB0C6F7A0B5ED8D)
  %2673 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2672)
  %2674 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2673)
  %2675 = fmul <8 x double> %2674, %2674
  %2676 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2674, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2675)
  %2677 = fadd <8 x double> %2676, splat (double 0x402DD4891DBECC6B)
  %2678 = fmul <8 x double> %2674, splat (double 0x40C77A698FD9BCCA)
  %2679 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2675, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2678)
  %2680 = fadd <8 x double> %2679, splat (double 0xC0B2D7440748F0B3)
  %2681 = fmul <8 x double> %2674, splat (double 0xC148A99584203885)
  %2682 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2675, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2681)
  %2683 = fadd <8 x double> %2682, splat (double 0x4118B9E59F2691E5)
  %2684 = fmul <8 x double> %2683, splat (double 2.000000e+00)
  %2685 = fneg <8 x double> %2680
  %2686 = fmul <8 x double> %2677, splat (double 4.000000e+00)
  %2687 = fneg <8 x double> %2683
  %2688 = fmul <8 x double> %2686, %2687
  %2689 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2680, <8 x double> %2680, <8 x double> %2688)
  %2690 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2689)
  %2691 = fsub <8 x double> %2685, %2690
  %2692 = fdiv <8 x double> %2684, %2691
  %2693 = fadd <8 x double> %2692, splat (double 0x408451671D164BD4)
  %2694 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2692, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2695 = fmul <8 x double> %2694, splat (double -4.000000e+00)
  %2696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2693, <8 x double> %2693, <8 x double> %2695)
  %2697 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2696)
  %2698 = fsub <8 x double> %2693, %2697
  %2699 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2698, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2700 = select <8 x i1> %2660, <8 x double> %2666, <8 x double> %2699
  %2701 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2700, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2702 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2700, <8 x double> %2701, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2703 = load i64, ptr %178, align 8, !tbaa !20, !noalias !100
  %2704 = icmp sgt i64 %2703, 0
  br i1 %2704, label %2705, label %2971

2705:                                             ; preds = %2665
  %2706 = fdiv <8 x double> splat (double 1.000000e+00), %2702
  br label %2707

2707:                                             ; preds = %2705, %2888
  %2708 = phi <8 x double> [ zeroinitializer, %2705 ], [ %2967, %2888 ]
  %2709 = phi <8 x double> [ zeroinitializer, %2705 ], [ %2966, %2888 ]
  %2710 = phi i64 [ 0, %2705 ], [ %2968, %2888 ]
  %2711 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !100
  %2712 = getelementptr inbounds nuw %struct.Piece, ptr %2711, i64 %2710
  %2713 = getelementptr inbounds nuw i8, ptr %2712, i64 6208
  %2714 = load <8 x double>, ptr %2713, align 64, !tbaa !26, !noalias !100
  %2715 = getelementptr inbounds nuw i8, ptr %2712, i64 6272
  %2716 = load <8 x double>, ptr %2715, align 64, !tbaa !26, !noalias !100
  %2717 = getelementptr inbounds nuw i8, ptr %2712, i64 7680
  %2718 = load <8 x double>, ptr %2717, align 64, !tbaa !26, !noalias !100
  %2719 = fcmp ule <8 x double> %2718, splat (double 1.000000e+00)
  %2720 = fmul <8 x double> %2700, %2716
  %2721 = fcmp ogt <8 x double> %2714, %2720
  %2722 = and <8 x i1> %2719, %2721
  %2723 = fneg <8 x double> %2716
  %2724 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2723, <8 x double> %2700, <8 x double> %2714)
  %2725 = fmul <8 x double> %2706, %2724
  %2726 = select <8 x i1> %2722, <8 x double> %2725, <8 x double> zeroinitializer
  %2727 = fmul <8 x double> %2706, %2723
  %2728 = fdiv <8 x double> %2714, %2716
  %2729 = select <8 x i1> %2722, <8 x double> %2700, <8 x double> %2728
  %2730 = getelementptr inbounds nuw i8, ptr %2712, i64 8448
  %2731 = load <8 x i64>, ptr %2730, align 64, !tbaa !26, !noalias !100
  %2732 = getelementptr inbounds nuw i8, ptr %2712, i64 2240
  %2733 = load <8 x double>, ptr %2732, align 64, !tbaa !26, !noalias !100
  %2734 = fcmp ule <8 x double> %2733, zeroinitializer
  %2735 = xor <8 x i1> %2719, splat (i1 true)
  %2736 = select <8 x i1> %2735, <8 x i1> splat (i1 true), <8 x i1> %2734
  %2737 = getelementptr inbounds nuw i8, ptr %2712, i64 6336
  %2738 = load <8 x double>, ptr %2737, align 64, !tbaa !26, !noalias !100
  %2739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2723, <8 x double> %2738, <8 x double> %2714)
  %2740 = fcmp ogt <8 x double> %2739, zeroinitializer
  %2741 = select <8 x i1> %2740, <8 x double> %2739, <8 x double> zeroinitializer
  %2742 = fmul <8 x double> %2706, %2741
  %2743 = icmp eq <8 x i64> %2731, zeroinitializer
  %2744 = select <8 x i1> %2736, <8 x i1> splat (i1 true), <8 x i1> %2743
  %2745 = select <8 x i1> %2744, <8 x double> %2726, <8 x double> %2742
  %2746 = select <8 x i1> %2744, <8 x double> %2729, <8 x double> %2738
  %2747 = select <8 x i1> %2744, <8 x i1> %2722, <8 x i1> zeroinitializer
  %2748 = select <8 x i1> %2747, <8 x double> %2727, <8 x double> zeroinitializer
  %2749 = getelementptr inbounds nuw i8, ptr %2712, i64 7872
  %2750 = getelementptr inbounds nuw i8, ptr %2712, i64 8128
  %2751 = load <8 x double>, ptr %2750, align 64, !tbaa !26, !noalias !103
  %2752 = fcmp ole <8 x double> %2700, %2751
  %2753 = getelementptr inbounds nuw i8, ptr %2712, i64 8192
  %2754 = load <8 x double>, ptr %2753, align 64, !tbaa !26, !noalias !103
  %2755 = fcmp oge <8 x double> %2700, %2754
  %2756 = or <8 x i1> %2752, %2755
  %2757 = bitcast <8 x i1> %2756 to i8
  %2758 = icmp eq i8 %2757, 0
  br i1 %2758, label %2759, label %2767

2759:                                             ; preds = %2707
  %2760 = load <8 x double>, ptr %2749, align 64, !tbaa !26, !noalias !103
  %2761 = getelementptr inbounds nuw i8, ptr %2712, i64 7936
  %2762 = load <8 x double>, ptr %2761, align 64, !tbaa !26, !noalias !103
  %2763 = getelementptr inbounds nuw i8, ptr %2712, i64 8064
  %2764 = load <8 x double>, ptr %2763, align 64, !tbaa !26, !noalias !103
  %2765 = getelementptr inbounds nuw i8, ptr %2712, i64 8000
  %2766 = load <8 x double>, ptr %2765, align 64, !tbaa !26, !noalias !103
  br label %2888

2767:                                             ; preds = %2707
  %2768 = load i64, ptr %141, align 16, !tbaa !21, !noalias !106
  %2769 = sitofp i64 %2768 to double
  %2770 = insertelement <8 x double> poison, double %2769, i64 0
  %2771 = shufflevector <8 x double> %2770, <8 x double> poison, <8 x i32> zeroinitializer
  %2772 = icmp sgt i64 %2768, 0
  br i1 %2772, label %2773, label %2863

2773:                                             ; preds = %2767
  %2774 = getelementptr inbounds nuw i8, ptr %2712, i64 8568
  %2775 = load ptr, ptr %2774, align 8, !tbaa !88, !noalias !106
  %2776 = getelementptr inbounds nuw i8, ptr %2712, i64 8576
  %2777 = load ptr, ptr %2776, align 64, !tbaa !89, !noalias !106
  %2778 = getelementptr inbounds nuw i8, ptr %2712, i64 8512
  %2779 = load i64, ptr %2778, align 64, !tbaa !31, !noalias !106
  %2780 = getelementptr inbounds nuw i8, ptr %2712, i64 8592
  %2781 = getelementptr inbounds nuw i8, ptr %2712, i64 8584
  %2782 = getelementptr inbounds nuw i8, ptr %2712, i64 8600
  br label %2783

2783:                                             ; preds = %2773, %2831
  %2784 = phi <8 x i64> [ splat (i64 -1), %2773 ], [ %2803, %2831 ]
  %2785 = phi i64 [ %2768, %2773 ], [ %2793, %2831 ]
  %2786 = phi <8 x double> [ splat (double 1.000000e+09), %2773 ], [ %2846, %2831 ]
  %2787 = phi <8 x double> [ zeroinitializer, %2773 ], [ %2850, %2831 ]
  %2788 = phi <8 x double> [ splat (double 1.000000e+09), %2773 ], [ %2828, %2831 ]
  %2789 = phi <8 x double> [ splat (double 1.000000e+00), %2773 ], [ %2827, %2831 ]
  %2790 = phi <8 x double> [ %2771, %2773 ], [ %2854, %2831 ]
  %2791 = phi <8 x double> [ zeroinitializer, %2773 ], [ %2843, %2831 ]
  %2792 = phi <8 x double> [ zeroinitializer, %2773 ], [ %2841, %2831 ]
  %2793 = add nsw i64 %2785, -1
  %2794 = getelementptr inbounds nuw <8 x double>, ptr %2775, i64 %2793
  %2795 = load <8 x double>, ptr %2794, align 64, !tbaa !26, !noalias !106
  %2796 = getelementptr inbounds nuw <8 x double>, ptr %2777, i64 %2793
  %2797 = load <8 x double>, ptr %2796, align 64, !tbaa !26, !noalias !106
  %2798 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2797, <8 x double> %2700, <8 x double> %2795)
  %2799 = fsub <8 x double> %2798, %2700
  %2800 = fcmp ogt <8 x double> %2799, splat (double 1.000000e-09)
  %2801 = select <8 x i1> %2800, <8 x i64> %2784, <8 x i64> zeroinitializer
  %2802 = icmp sgt i64 %2785, %2779
  %2803 = select i1 %2802, <8 x i64> %2801, <8 x i64> zeroinitializer
  %2804 = icmp slt i64 %2785, %2768
  br i1 %2804, label %2805, label %2817

2805:                                             ; preds = %2783
  %2806 = load ptr, ptr %2780, align 16, !tbaa !86, !noalias !106
  %2807 = getelementptr inbounds nuw <8 x double>, ptr %2806, i64 %2785
  %2808 = load <8 x double>, ptr %2807, align 64, !tbaa !26, !noalias !106
  %2809 = fmul <8 x double> %2799, %2808
  %2810 = icmp eq <8 x i64> %2803, %2784
  %2811 = select <8 x i1> %2810, <8 x double> zeroinitializer, <8 x double> %2809
  %2812 = fadd <8 x double> %2792, %2811
  %2813 = fadd <8 x double> %2797, splat (double -1.000000e+00)
  %2814 = fmul <8 x double> %2813, %2808
  %2815 = select <8 x i1> %2810, <8 x double> zeroinitializer, <8 x double> %2814
  %2816 = fadd <8 x double> %2791, %2815
  br label %2817

2817:                                             ; preds = %2805, %2783
  %2818 = phi <8 x double> [ %2812, %2805 ], [ %2792, %2783 ]
  %2819 = phi <8 x double> [ %2816, %2805 ], [ %2791, %2783 ]
  br i1 %2802, label %2820, label %2826

2820:                                             ; preds = %2817
  %2821 = fneg <8 x double> %2799
  %2822 = icmp eq <8 x i64> %2803, %2784
  %2823 = select <8 x i1> %2822, <8 x double> %2788, <8 x double> %2821
  %2824 = fsub <8 x double> splat (double 1.000000e+00), %2797
  %2825 = select <8 x i1> %2822, <8 x double> %2789, <8 x double> %2824
  br label %2826

2826:                                             ; preds = %2820, %2817
  %2827 = phi <8 x double> [ %2825, %2820 ], [ %2789, %2817 ]
  %2828 = phi <8 x double> [ %2823, %2820 ], [ %2788, %2817 ]
  %2829 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2803)
  %2830 = icmp eq i64 %2829, 0
  br i1 %2830, label %2856, label %2831

2831:                                             ; preds = %2826
  %2832 = load ptr, ptr %2781, align 8, !tbaa !85, !noalias !106
  %2833 = getelementptr inbounds nuw <8 x double>, ptr %2832, i64 %2793
  %2834 = load <8 x double>, ptr %2833, align 64, !tbaa !26, !noalias !106
  %2835 = load ptr, ptr %2782, align 8, !tbaa !87, !noalias !106
  %2836 = getelementptr inbounds nuw <8 x double>, ptr %2835, i64 %2793
  %2837 = load <8 x double>, ptr %2836, align 64, !tbaa !26, !noalias !106
  %2838 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2837, <8 x double> %2700, <8 x double> %2834)
  %2839 = icmp eq <8 x i64> %2803, zeroinitializer
  %2840 = select <8 x i1> %2839, <8 x double> zeroinitializer, <8 x double> %2838
  %2841 = fadd <8 x double> %2818, %2840
  %2842 = select <8 x i1> %2839, <8 x double> zeroinitializer, <8 x double> %2837
  %2843 = fadd <8 x double> %2819, %2842
  %2844 = fcmp olt <8 x double> %2786, %2799
  %2845 = select <8 x i1> %2839, <8 x i1> splat (i1 true), <8 x i1> %2844
  %2846 = select <8 x i1> %2845, <8 x double> %2786, <8 x double> %2799
  %2847 = fsub <8 x double> splat (double 1.000000e+00), %2797
  %2848 = fcmp ogt <8 x double> %2787, %2847
  %2849 = select <8 x i1> %2839, <8 x i1> splat (i1 true), <8 x i1> %2848
  %2850 = select <8 x i1> %2849, <8 x double> %2787, <8 x double> %2847
  %2851 = uitofp nneg i64 %2793 to double
  %2852 = insertelement <8 x double> poison, double %2851, i64 0
  %2853 = shufflevector <8 x double> %2852, <8 x double> poison, <8 x i32> zeroinitializer
  %2854 = select <8 x i1> %2839, <8 x double> %2790, <8 x double> %2853
  %2855 = icmp samesign ugt i64 %2785, 1
  br i1 %2855, label %2783, label %2856, !llvm.loop !109

2856:                                             ; preds = %2826, %2831
  %2857 = phi <8 x double> [ %2854, %2831 ], [ %2790, %2826 ]
  %2858 = phi <8 x double> [ %2850, %2831 ], [ %2787, %2826 ]
  %2859 = phi <8 x double> [ %2846, %2831 ], [ %2786, %2826 ]
  %2860 = phi <8 x double> [ %2841, %2831 ], [ %2818, %2826 ]
  %2861 = phi <8 x double> [ %2843, %2831 ], [ %2819, %2826 ]
  %2862 = fdiv <8 x double> %2828, %2827
  br label %2863

2863:                                             ; preds = %2856, %2767
  %2864 = phi <8 x double> [ %2771, %2767 ], [ %2857, %2856 ]
  %2865 = phi <8 x double> [ zeroinitializer, %2767 ], [ %2858, %2856 ]
  %2866 = phi <8 x double> [ splat (double 1.000000e+09), %2767 ], [ %2859, %2856 ]
  %2867 = phi <8 x double> [ zeroinitializer, %2767 ], [ %2860, %2856 ]
  %2868 = phi <8 x double> [ zeroinitializer, %2767 ], [ %2861, %2856 ]
  %2869 = phi <8 x double> [ splat (double 1.000000e+09), %2767 ], [ %2862, %2856 ]
  %2870 = fsub <8 x double> %2700, %2869
  %2871 = fcmp ogt <8 x double> %2865, splat (double 1.000000e-09)
  %2872 = select <8 x i1> %2871, <8 x double> %2865, <8 x double> splat (double 1.000000e-09)
  %2873 = fdiv <8 x double> %2866, %2872
  %2874 = fadd <8 x double> %2700, %2873
  %2875 = load <8 x double>, ptr %2749, align 64, !tbaa !26, !noalias !103
  %2876 = select <8 x i1> %2756, <8 x double> %2867, <8 x double> %2875
  store <8 x double> %2876, ptr %2749, align 64, !tbaa !26, !noalias !103
  %2877 = getelementptr inbounds nuw i8, ptr %2712, i64 7936
  %2878 = load <8 x double>, ptr %2877, align 64, !tbaa !26, !noalias !103
  %2879 = select <8 x i1> %2756, <8 x double> %2868, <8 x double> %2878
  store <8 x double> %2879, ptr %2877, align 64, !tbaa !26, !noalias !103
  %2880 = getelementptr inbounds nuw i8, ptr %2712, i64 8000
  %2881 = load <8 x double>, ptr %2880, align 64, !tbaa !26, !noalias !103
  %2882 = select <8 x i1> %2756, <8 x double> %2864, <8 x double> %2881
  store <8 x double> %2882, ptr %2880, align 64, !tbaa !26, !noalias !103
  %2883 = getelementptr inbounds nuw i8, ptr %2712, i64 8064
  %2884 = load <8 x double>, ptr %2883, align 64, !tbaa !26, !noalias !103
  %2885 = select <8 x i1> %2756, <8 x double> %2700, <8 x double> %2884
  store <8 x double> %2885, ptr %2883, align 64, !tbaa !26, !noalias !103
  %2886 = select <8 x i1> %2756, <8 x double> %2870, <8 x double> %2751
  store <8 x double> %2886, ptr %2750, align 64, !tbaa !26, !noalias !103
  %2887 = select <8 x i1> %2756, <8 x double> %2874, <8 x double> %2754
  store <8 x double> %2887, ptr %2753, align 64, !tbaa !26, !noalias !103
  br label %2888

2888:                                             ; preds = %2759, %2863
  %2889 = phi <8 x double> [ %2766, %2759 ], [ %2882, %2863 ]
  %2890 = phi <8 x double> [ %2764, %2759 ], [ %2885, %2863 ]
  %2891 = phi <8 x double> [ %2762, %2759 ], [ %2879, %2863 ]
  %2892 = phi <8 x double> [ %2760, %2759 ], [ %2876, %2863 ]
  %2893 = fsub <8 x double> %2700, %2890
  %2894 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2891, <8 x double> %2893, <8 x double> %2892)
  %2895 = getelementptr inbounds nuw i8, ptr %2712, i64 6464
  %2896 = load <8 x double>, ptr %2895, align 64, !tbaa !26, !noalias !100
  %2897 = getelementptr inbounds nuw i8, ptr %2712, i64 5888
  %2898 = load <8 x double>, ptr %2897, align 64, !tbaa !26, !noalias !100
  %2899 = getelementptr inbounds nuw i8, ptr %2712, i64 7424
  %2900 = load <8 x double>, ptr %2899, align 64, !tbaa !26, !noalias !100
  %2901 = fneg <8 x double> %2900
  %2902 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2896, <8 x double> %2898, <8 x double> %2901)
  %2903 = getelementptr inbounds nuw i8, ptr %2712, i64 7360
  %2904 = load <8 x double>, ptr %2903, align 64, !tbaa !26, !noalias !100
  %2905 = fadd <8 x double> %2896, %2904
  %2906 = getelementptr inbounds nuw i8, ptr %2712, i64 8320
  %2907 = load <8 x i64>, ptr %2906, align 64, !tbaa !26, !noalias !100
  %2908 = getelementptr inbounds nuw i8, ptr %2712, i64 8672
  %2909 = load ptr, ptr %2908, align 32, !tbaa !94, !noalias !100
  %2910 = load <8 x double>, ptr %2909, align 64, !tbaa !26, !noalias !100
  %2911 = fmul <8 x double> %2896, %2910
  %2912 = icmp eq <8 x i64> %2907, zeroinitializer
  %2913 = select <8 x i1> %2912, <8 x double> %2902, <8 x double> %2911
  %2914 = getelementptr inbounds nuw i8, ptr %2712, i64 8680
  %2915 = load ptr, ptr %2914, align 8, !tbaa !95, !noalias !100
  %2916 = load <8 x double>, ptr %2915, align 64, !tbaa !26, !noalias !100
  %2917 = fsub <8 x double> splat (double 1.000000e+00), %2916
  %2918 = fmul <8 x double> %2896, %2917
  %2919 = select <8 x i1> %2912, <8 x double> %2905, <8 x double> %2918
  %2920 = fneg <8 x double> %2919
  %2921 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2920, <8 x double> %2700, <8 x double> %2913)
  %2922 = load i64, ptr %141, align 16, !tbaa !21, !noalias !100
  %2923 = sitofp i64 %2922 to double
  %2924 = insertelement <8 x double> poison, double %2923, i64 0
  %2925 = shufflevector <8 x double> %2924, <8 x double> poison, <8 x i32> zeroinitializer
  %2926 = fcmp olt <8 x double> %2889, %2925
  %2927 = and <8 x i1> %2719, %2926
  %2928 = fcmp ogt <8 x double> %2894, zeroinitializer
  %2929 = fcmp oge <8 x double> %2921, zeroinitializer
  %2930 = and <8 x i1> %2928, %2929
  %2931 = and <8 x i1> %2930, %2927
  %2932 = sext <8 x i1> %2931 to <8 x i64>
  %2933 = xor <8 x i64> %2932, splat (i64 -1)
  %2934 = fadd <8 x double> %2894, %2921
  %2935 = fcmp ogt <8 x double> %2934, zeroinitializer
  %2936 = select <8 x i1> %2935, <8 x i1> %2927, <8 x i1> zeroinitializer
  %2937 = select <8 x i1> %2936, <8 x i64> %2933, <8 x i64> zeroinitializer
  %2938 = or <8 x i64> %2937, %2932
  %2939 = fmul <8 x double> %2706, %2921
  %2940 = select <8 x i1> %2931, <8 x double> %2939, <8 x double> zeroinitializer
  %2941 = icmp eq <8 x i64> %2938, zeroinitializer
  %2942 = select <8 x i1> %2941, <8 x double> %2745, <8 x double> %2940
  %2943 = select <8 x i1> %2941, <8 x double> %2746, <8 x double> %2700
  %2944 = fsub <8 x double> %2891, %2919
  %2945 = fmul <8 x double> %2706, %2944
  %2946 = select <8 x i1> %2941, <8 x double> %2748, <8 x double> %2945
  %2947 = getelementptr inbounds nuw i8, ptr %2712, i64 6016
  store <8 x double> %2942, ptr %2947, align 64, !tbaa !26, !noalias !100
  %2948 = getelementptr inbounds nuw i8, ptr %2712, i64 5952
  store <8 x double> %2943, ptr %2948, align 64, !tbaa !26, !noalias !100
  %2949 = fmul <8 x double> %2706, %2894
  %2950 = fmul <8 x double> %2706, %2934
  %2951 = icmp eq <8 x i64> %2937, zeroinitializer
  %2952 = select <8 x i1> %2951, <8 x double> zeroinitializer, <8 x double> %2950
  %2953 = select <8 x i1> %2931, <8 x double> %2949, <8 x double> %2952
  %2954 = getelementptr inbounds nuw i8, ptr %2712, i64 6080
  store <8 x double> %2953, ptr %2954, align 64, !tbaa !26, !noalias !100
  %2955 = load i64, ptr %141, align 16, !tbaa !21, !noalias !100
  %2956 = sitofp i64 %2955 to double
  %2957 = insertelement <8 x double> poison, double %2956, i64 0
  %2958 = shufflevector <8 x double> %2957, <8 x double> poison, <8 x i32> zeroinitializer
  %2959 = select <8 x i1> %2941, <8 x double> %2958, <8 x double> %2889
  %2960 = getelementptr inbounds nuw i8, ptr %2712, i64 6144
  store <8 x double> %2959, ptr %2960, align 64, !tbaa !26, !noalias !100
  %2961 = getelementptr inbounds nuw i8, ptr %2712, i64 128
  %2962 = load <8 x double>, ptr %2961, align 64, !tbaa !26, !noalias !100
  %2963 = fadd <8 x double> %2942, %2953
  %2964 = fmul <8 x double> %2962, %2963
  %2965 = fmul <8 x double> %2962, %2946
  %2966 = fadd <8 x double> %2709, %2964
  %2967 = fadd <8 x double> %2708, %2965
  %2968 = add nuw nsw i64 %2710, 1
  %2969 = load i64, ptr %178, align 8, !tbaa !20, !noalias !100
  %2970 = icmp slt i64 %2968, %2969
  br i1 %2970, label %2707, label %2971, !llvm.loop !110

2971:                                             ; preds = %2888, %2665
  %2972 = phi <8 x double> [ zeroinitializer, %2665 ], [ %2966, %2888 ]
  %2973 = phi <8 x double> [ zeroinitializer, %2665 ], [ %2967, %2888 ]
  %2974 = fsub <8 x double> %2671, %2635
  %2975 = fcmp ogt <8 x double> %2974, zeroinitializer
  %2976 = select <8 x i1> %2975, <8 x double> %2974, <8 x double> zeroinitializer
  %2977 = fadd <8 x double> %2700, splat (double 2.731500e+02)
  %2978 = fdiv <8 x double> %2976, splat (double 4.615260e+02)
  %2979 = fadd <8 x double> %2662, %2978
  %2980 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2981 = fdiv <8 x double> %2979, %2980
  %2982 = fmul <8 x double> %2980, %2981
  %2983 = fdiv <8 x double> %2671, %2982
  %2984 = load <8 x double>, ptr %200, align 64, !tbaa !26, !noalias !111
  %2985 = fsub <8 x double> %2671, %2984
  %2986 = load <8 x double>, ptr %213, align 64, !tbaa !26, !noalias !111
  %2987 = fsub <8 x double> %2985, %2986
  %2988 = load <8 x double>, ptr %214, align 64, !tbaa !26, !noalias !111
  %2989 = load <8 x double>, ptr %160, align 64, !tbaa !26, !noalias !111
  %2990 = fcmp une <8 x double> %2989, splat (double 2.000000e+00)
  %2991 = load <8 x double>, ptr %215, align 64, !tbaa !26, !noalias !111
  %2992 = select <8 x i1> %2990, <8 x double> zeroinitializer, <8 x double> %2991
  %2993 = fadd <8 x double> %2988, %2992
  %2994 = fcmp ule <8 x double> %2985, zeroinitializer
  %2995 = fcmp ule <8 x double> %2993, zeroinitializer
  %2996 = or <8 x i1> %2994, %2995
  %2997 = fmul <8 x double> %2981, splat (double 2.000000e+00)
  %2998 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2997)
  %2999 = fmul <8 x double> %2998, %2993
  %3000 = fadd <8 x double> %2985, splat (double 2.000000e+02)
  %3001 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3000)
  %3002 = select <8 x i1> %2994, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3001
  %3003 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2985, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3004 = fmul <8 x double> %3003, %2999
  %3005 = fmul <8 x double> %3002, %3002
  %3006 = fmul <8 x double> %3002, %3005
  %3007 = fdiv <8 x double> %3004, %3006
  %3008 = fmul <8 x double> %2985, %2999
  %3009 = fdiv <8 x double> %3008, %3002
  %3010 = select <8 x i1> %2996, <8 x double> zeroinitializer, <8 x double> %3009
  %3011 = select <8 x i1> %2996, <8 x double> zeroinitializer, <8 x double> %3007
  %3012 = fcmp ule <8 x double> %2987, zeroinitializer
  %3013 = load <8 x double>, ptr %216, align 64, !tbaa !26, !noalias !111
  %3014 = fmul <8 x double> %2987, %3013
  %3015 = select <8 x i1> %3012, <8 x double> zeroinitializer, <8 x double> %3014
  %3016 = fadd <8 x double> %3015, %3010
  %3017 = select <8 x i1> %3012, <8 x double> zeroinitializer, <8 x double> %3013
  %3018 = fadd <8 x double> %3017, %3011
  %3019 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %3020 = fsub <8 x double> %2984, %2671
  %3021 = fcmp ule <8 x double> %3020, zeroinitializer
  %3022 = fcmp ule <8 x double> %3019, zeroinitializer
  %3023 = or <8 x i1> %3021, %3022
  %3024 = fmul <8 x double> %2664, %3019
  %3025 = fadd <8 x double> %3020, splat (double 2.000000e+02)
  %3026 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3025)
  %3027 = select <8 x i1> %3021, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3026
  %3028 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3020, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3029 = fmul <8 x double> %3028, %3024
  %3030 = fmul <8 x double> %3027, %3027
  %3031 = fmul <8 x double> %3027, %3030
  %3032 = fdiv <8 x double> %3029, %3031
  %3033 = fmul <8 x double> %3020, %3024
  %3034 = fdiv <8 x double> %3033, %3027
  %3035 = load <8 x double>, ptr %185, align 64, !tbaa !26, !noalias !114
  %3036 = load <8 x double>, ptr %202, align 64, !tbaa !26, !noalias !114
  %3037 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !114
  %3038 = load <8 x double>, ptr %203, align 64, !tbaa !26, !noalias !114
  %3039 = fmul <8 x double> %3037, %3038
  %3040 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3035, <8 x double> %3036, <8 x double> %3039)
  %3041 = load <8 x double>, ptr %206, align 64, !tbaa !26, !noalias !114
  %3042 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !114
  %3043 = load <8 x double>, ptr %204, align 64, !tbaa !26, !noalias !114
  %3044 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3041, <8 x double> %3042, <8 x double> %3043)
  %3045 = load <8 x double>, ptr %205, align 64, !tbaa !26, !noalias !114
  %3046 = fneg <8 x double> %3040
  %3047 = fmul <8 x double> %3041, %3046
  %3048 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3043, <8 x double> %3045, <8 x double> %3047)
  %3049 = fdiv <8 x double> %3048, %3044
  %3050 = fcmp ogt <8 x double> %2976, splat (double 2.000000e+03)
  %3051 = select <8 x i1> %3050, <8 x double> %2976, <8 x double> splat (double 2.000000e+03)
  %3052 = fmul <8 x double> %3051, splat (double 0x3EB0C6F7A0B5ED8D)
  %3053 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3052)
  %3054 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3053)
  %3055 = fmul <8 x double> %3054, %3054
  %3056 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3055)
  %3057 = fadd <8 x double> %3056, splat (double 0x402DD4891DBECC6B)
  %3058 = fmul <8 x double> %3054, splat (double 0x40C77A698FD9BCCA)
  %3059 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3055, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3058)
  %3060 = fadd <8 x double> %3059, splat (double 0xC0B2D7440748F0B3)
  %3061 = fmul <8 x double> %3054, splat (double 0xC148A99584203885)
  %3062 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3055, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3061)
  %3063 = fadd <8 x double> %3062, splat (double 0x4118B9E59F2691E5)
  %3064 = fmul <8 x double> %3063, splat (double 2.000000e+00)
  %3065 = fneg <8 x double> %3060
  %3066 = fmul <8 x double> %3057, splat (double 4.000000e+00)
  %3067 = fneg <8 x double> %3063
  %3068 = fmul <8 x double> %3066, %3067
  %3069 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3060, <8 x double> %3060, <8 x double> %3068)
  %3070 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3069)
  %3071 = fsub <8 x double> %3065, %3070
  %3072 = fdiv <8 x double> %3064, %3071
  %3073 = fadd <8 x double> %3072, splat (double 0x408451671D164BD4)
  %3074 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3072, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3075 = fmul <8 x double> %3074, splat (double -4.000000e+00)
  %3076 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3073, <8 x double> %3073, <8 x double> %3075)
  %3077 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3076)
  %3078 = fsub <8 x double> %3073, %3077
  %3079 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3078, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3079, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3081 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3079, <8 x double> %3080, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3082 = fadd <8 x double> %3079, splat (double 2.731500e+02)
  %3083 = fcmp ule <8 x double> %3079, %3049
  %3084 = load <8 x double>, ptr %218, align 64, !tbaa !26, !noalias !114
  %3085 = fmul <8 x double> %3044, %3084
  %3086 = fadd <8 x double> %3044, %3084
  %3087 = fdiv <8 x double> %3085, %3086
  %3088 = fdiv <8 x double> %3087, %3081
  %3089 = fmul <8 x double> %3082, splat (double 4.615260e+02)
  %3090 = fmul <8 x double> %3051, %3081
  %3091 = fmul <8 x double> %3079, %3084
  %3092 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3049, <8 x double> %3044, <8 x double> %3091)
  %3093 = fdiv <8 x double> %3092, %3086
  %3094 = select <8 x i1> %3083, <8 x double> %3049, <8 x double> %3093
  store <8 x double> %3094, ptr %208, align 64, !tbaa !26, !noalias !114
  %3095 = fsub <8 x double> %3079, %3049
  %3096 = fmul <8 x double> %3095, %3088
  %3097 = select <8 x i1> %3083, <8 x double> zeroinitializer, <8 x double> %3096
  %3098 = fmul <8 x double> %2977, splat (double 4.615260e+02)
  %3099 = fmul <8 x double> %2977, %3098
  %3100 = fmul <8 x double> %2671, %2702
  %3101 = fdiv <8 x double> %3099, %3100
  %3102 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3042, <8 x double> %2671, <8 x double> %2646)
  %3103 = fsub <8 x double> %2972, %3097
  %3104 = fmul <8 x double> %3103, splat (double -4.615260e+02)
  %3105 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2649, <8 x double> %3102, <8 x double> %3104)
  %3106 = fmul <8 x double> %3034, splat (double -2.870530e+02)
  %3107 = select <8 x i1> %3023, <8 x double> splat (double -0.000000e+00), <8 x double> %3106
  %3108 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2983, <8 x double> %3016, <8 x double> %3107)
  %3109 = fadd <8 x double> %3108, %3105
  %3110 = fneg <8 x double> %3082
  %3111 = fmul <8 x double> %3089, %3110
  %3112 = fdiv <8 x double> %3111, %3090
  %3113 = fmul <8 x double> %3112, %3088
  %3114 = select <8 x i1> %3083, <8 x double> splat (double -0.000000e+00), <8 x double> %3113
  %3115 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2973, <8 x double> %3101, <8 x double> %3114)
  %3116 = fmul <8 x double> %3115, splat (double -4.615260e+02)
  %3117 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2649, <8 x double> %3042, <8 x double> %3116)
  %3118 = fmul <8 x double> %3032, splat (double 2.870530e+02)
  %3119 = select <8 x i1> %3023, <8 x double> zeroinitializer, <8 x double> %3118
  %3120 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2983, <8 x double> %3018, <8 x double> %3119)
  %3121 = fadd <8 x double> %3120, %3117
  %3122 = fcmp ule <8 x double> %3109, zeroinitializer
  %3123 = fcmp olt <8 x double> %2668, %2671
  %3124 = select <8 x i1> %3122, <8 x i1> splat (i1 true), <8 x i1> %3123
  %3125 = select <8 x i1> %3124, <8 x double> %2668, <8 x double> %2671
  %3126 = fcmp ogt <8 x double> %2667, %2671
  %3127 = select <8 x i1> %3126, <8 x double> %2667, <8 x double> %2671
  %3128 = select <8 x i1> %3122, <8 x double> %3127, <8 x double> %2667
  %3129 = fdiv <8 x double> %3109, %3121
  %3130 = fsub <8 x double> %2671, %3129
  %3131 = fsub <8 x double> %3130, %2671
  %3132 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3131)
  %3133 = fcmp uge <8 x double> %3132, splat (double 2.000000e-01)
  %3134 = fcmp uge <8 x double> %3128, %3130
  %3135 = fcmp uge <8 x double> %3130, %3125
  %3136 = or <8 x i1> %3134, %3135
  %3137 = and <8 x i1> %3133, %3136
  %3138 = fadd <8 x double> %3128, %3125
  %3139 = fmul <8 x double> %3138, splat (double 5.000000e-01)
  %3140 = select <8 x i1> %3137, <8 x double> %3139, <8 x double> %3130
  %3141 = fsub <8 x double> %3140, %2671
  %3142 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3141)
  %3143 = fcmp oge <8 x double> %3142, splat (double 2.000000e-01)
  %3144 = select <8 x i1> %3143, <8 x i64> %2669, <8 x i64> zeroinitializer
  %3145 = icmp eq <8 x i64> %3144, zeroinitializer
  %3146 = select <8 x i1> %3145, <8 x double> %2671, <8 x double> %3140
  %3147 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3144)
  %3148 = icmp ne i64 %3147, 0
  %3149 = add nuw nsw i32 %2670, 1
  %3150 = icmp samesign ult i32 %2670, 59
  %3151 = select i1 %3148, i1 %3150, i1 false
  br i1 %3151, label %2665, label %3152, !llvm.loop !117

3152:                                             ; preds = %2971
  %3153 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3154 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %3155 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3156 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %3157 = fmul <8 x double> %3155, %3156
  %3158 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3153, <8 x double> %3154, <8 x double> %3157)
  %3159 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %3160 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %3161 = fsub <8 x double> %3160, %3146
  %3162 = fcmp ule <8 x double> %3161, zeroinitializer
  %3163 = fcmp ule <8 x double> %3159, zeroinitializer
  %3164 = or <8 x i1> %3163, %3162
  %3165 = fmul <8 x double> %2664, %3159
  %3166 = fadd <8 x double> %3161, splat (double 2.000000e+02)
  %3167 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3166)
  %3168 = select <8 x i1> %3162, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3167
  %3169 = fmul <8 x double> %3165, %3161
  %3170 = fdiv <8 x double> %3169, %3168
  %3171 = fmul <8 x double> %3170, splat (double 2.870530e+02)
  %3172 = select <8 x i1> %3164, <8 x double> zeroinitializer, <8 x double> %3171
  %3173 = fdiv <8 x double> %3172, %2649
  %3174 = fsub <8 x double> %3173, %3158
  %3175 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3176 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %3177 = fmul <8 x double> %2981, %3176
  %3178 = fdiv <8 x double> %3016, %3177
  %3179 = fadd <8 x double> %3175, %3178
  %3180 = fdiv <8 x double> %3174, %3179
  %3181 = fcmp ogt <8 x double> %3180, zeroinitializer
  %3182 = select <8 x i1> %3181, <8 x double> %3180, <8 x double> zeroinitializer
  %3183 = fcmp olt <8 x double> %3182, %3146
  %3184 = select <8 x i1> %3183, <8 x double> %3182, <8 x double> %3146
  %3185 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3186 = select <8 x i1> %2660, <8 x double> %3185, <8 x double> %3184
  store <8 x double> %3186, ptr %207, align 64, !tbaa !26
  %3187 = select <8 x i1> %2660, <8 x double> %2637, <8 x double> %3094
  store <8 x double> %3187, ptr %208, align 64, !tbaa !26
  store <8 x double> %3146, ptr %201, align 64, !tbaa !26
  store <8 x double> %2700, ptr %221, align 64, !tbaa !26
  %3188 = load i64, ptr %178, align 8, !tbaa !20
  br label %3444

3189:                                             ; preds = %2616
  store <8 x double> %2618, ptr %221, align 64, !tbaa !26
  %3190 = icmp sgt i64 %2380, 0
  br i1 %3190, label %3191, label %3447

3191:                                             ; preds = %3189
  %3192 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2618, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3193 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2618, <8 x double> %3192, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3194 = fdiv <8 x double> splat (double 1.000000e+00), %3193
  br label %3195

3195:                                             ; preds = %3191, %3371
  %3196 = phi i64 [ 0, %3191 ], [ %3441, %3371 ]
  %3197 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !118
  %3198 = getelementptr inbounds nuw %struct.Piece, ptr %3197, i64 %3196
  %3199 = getelementptr inbounds nuw i8, ptr %3198, i64 6208
  %3200 = load <8 x double>, ptr %3199, align 64, !tbaa !26, !noalias !118
  %3201 = getelementptr inbounds nuw i8, ptr %3198, i64 6272
  %3202 = load <8 x double>, ptr %3201, align 64, !tbaa !26, !noalias !118
  %3203 = getelementptr inbounds nuw i8, ptr %3198, i64 7680
  %3204 = load <8 x double>, ptr %3203, align 64, !tbaa !26, !noalias !118
  %3205 = fcmp ule <8 x double> %3204, splat (double 1.000000e+00)
  %3206 = fmul <8 x double> %2618, %3202
  %3207 = fcmp ogt <8 x double> %3200, %3206
  %3208 = and <8 x i1> %3205, %3207
  %3209 = fneg <8 x double> %3202
  %3210 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3209, <8 x double> %2618, <8 x double> %3200)
  %3211 = fmul <8 x double> %3194, %3210
  %3212 = select <8 x i1> %3208, <8 x double> %3211, <8 x double> zeroinitializer
  %3213 = fdiv <8 x double> %3200, %3202
  %3214 = select <8 x i1> %3208, <8 x double> %2618, <8 x double> %3213
  %3215 = getelementptr inbounds nuw i8, ptr %3198, i64 8448
  %3216 = load <8 x i64>, ptr %3215, align 64, !tbaa !26, !noalias !118
  %3217 = getelementptr inbounds nuw i8, ptr %3198, i64 2240
  %3218 = load <8 x double>, ptr %3217, align 64, !tbaa !26, !noalias !118
  %3219 = fcmp ule <8 x double> %3218, zeroinitializer
  %3220 = xor <8 x i1> %3205, splat (i1 true)
  %3221 = select <8 x i1> %3220, <8 x i1> splat (i1 true), <8 x i1> %3219
  %3222 = getelementptr inbounds nuw i8, ptr %3198, i64 6336
  %3223 = load <8 x double>, ptr %3222, align 64, !tbaa !26, !noalias !118
  %3224 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3209, <8 x double> %3223, <8 x double> %3200)
  %3225 = fcmp ogt <8 x double> %3224, zeroinitializer
  %3226 = select <8 x i1> %3225, <8 x double> %3224, <8 x double> zeroinitializer
  %3227 = fmul <8 x double> %3194, %3226
  %3228 = icmp eq <8 x i64> %3216, zeroinitializer
  %3229 = select <8 x i1> %3221, <8 x i1> splat (i1 true), <8 x i1> %3228
  %3230 = select <8 x i1> %3229, <8 x double> %3212, <8 x double> %3227
  %3231 = select <8 x i1> %3229, <8 x double> %3214, <8 x double> %3223
  %3232 = getelementptr inbounds nuw i8, ptr %3198, i64 7872
  %3233 = getelementptr inbounds nuw i8, ptr %3198, i64 8128
  %3234 = load <8 x double>, ptr %3233, align 64, !tbaa !26, !noalias !121
  %3235 = fcmp ole <8 x double> %2618, %3234
  %3236 = getelementptr inbounds nuw i8, ptr %3198, i64 8192
  %3237 = load <8 x double>, ptr %3236, align 64, !tbaa !26, !noalias !121
  %3238 = fcmp oge <8 x double> %2618, %3237
  %3239 = or <8 x i1> %3235, %3238
  %3240 = bitcast <8 x i1> %3239 to i8
  %3241 = icmp eq i8 %3240, 0
  br i1 %3241, label %3242, label %3250

3242:                                             ; preds = %3195
  %3243 = load <8 x double>, ptr %3232, align 64, !tbaa !26, !noalias !121
  %3244 = getelementptr inbounds nuw i8, ptr %3198, i64 7936
  %3245 = load <8 x double>, ptr %3244, align 64, !tbaa !26, !noalias !121
  %3246 = getelementptr inbounds nuw i8, ptr %3198, i64 8064
  %3247 = load <8 x double>, ptr %3246, align 64, !tbaa !26, !noalias !121
  %3248 = getelementptr inbounds nuw i8, ptr %3198, i64 8000
  %3249 = load <8 x double>, ptr %3248, align 64, !tbaa !26, !noalias !121
  br label %3371

3250:                                             ; preds = %3195
  %3251 = load i64, ptr %141, align 16, !tbaa !21, !noalias !124
  %3252 = sitofp i64 %3251 to double
  %3253 = insertelement <8 x double> poison, double %3252, i64 0
  %3254 = shufflevector <8 x double> %3253, <8 x double> poison, <8 x i32> zeroinitializer
  %3255 = icmp sgt i64 %3251, 0
  br i1 %3255, label %3256, label %3346

3256:                                             ; preds = %3250
  %3257 = getelementptr inbounds nuw i8, ptr %3198, i64 8568
  %3258 = load ptr, ptr %3257, align 8, !tbaa !88, !noalias !124
  %3259 = getelementptr inbounds nuw i8, ptr %3198, i64 8576
  %3260 = load ptr, ptr %3259, align 64, !tbaa !89, !noalias !124
  %3261 = getelementptr inbounds nuw i8, ptr %3198, i64 8512
  %3262 = load i64, ptr %3261, align 64, !tbaa !31, !noalias !124
  %3263 = getelementptr inbounds nuw i8, ptr %3198, i64 8592
  %3264 = getelementptr inbounds nuw i8, ptr %3198, i64 8584
  %3265 = getelementptr inbounds nuw i8, ptr %3198, i64 8600
  br label %3266

3266:                                             ; preds = %3256, %3314
  %3267 = phi <8 x i64> [ splat (i64 -1), %3256 ], [ %3286, %3314 ]
  %3268 = phi i64 [ %3251, %3256 ], [ %3276, %3314 ]
  %3269 = phi <8 x double> [ splat (double 1.000000e+09), %3256 ], [ %3329, %3314 ]
  %3270 = phi <8 x double> [ zeroinitializer, %3256 ], [ %3333, %3314 ]
  %3271 = phi <8 x double> [ splat (double 1.000000e+09), %3256 ], [ %3311, %3314 ]
  %3272 = phi <8 x double> [ splat (double 1.000000e+00), %3256 ], [ %3310, %3314 ]
  %3273 = phi <8 x double> [ %3254, %3256 ], [ %3337, %3314 ]
  %3274 = phi <8 x double> [ zeroinitializer, %3256 ], [ %3326, %3314 ]
  %3275 = phi <8 x double> [ zeroinitializer, %3256 ], [ %3324, %3314 ]
  %3276 = add nsw i64 %3268, -1
  %3277 = getelementptr inbounds nuw <8 x double>, ptr %3258, i64 %3276
  %3278 = load <8 x double>, ptr %3277, align 64, !tbaa !26, !noalias !124
  %3279 = getelementptr inbounds nuw <8 x double>, ptr %3260, i64 %3276
  %3280 = load <8 x double>, ptr %3279, align 64, !tbaa !26, !noalias !124
  %3281 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3280, <8 x double> %2618, <8 x double> %3278)
  %3282 = fsub <8 x double> %3281, %2618
  %3283 = fcmp ogt <8 x double> %3282, splat (double 1.000000e-09)
  %3284 = select <8 x i1> %3283, <8 x i64> %3267, <8 x i64> zeroinitializer
  %3285 = icmp sgt i64 %3268, %3262
  %3286 = select i1 %3285, <8 x i64> %3284, <8 x i64> zeroinitializer
  %3287 = icmp slt i64 %3268, %3251
  br i1 %3287, label %3288, label %3300

3288:                                             ; preds = %3266
  %3289 = load ptr, ptr %3263, align 16, !tbaa !86, !noalias !124
  %3290 = getelementptr inbounds nuw <8 x double>, ptr %3289, i64 %3268
  %3291 = load <8 x double>, ptr %3290, align 64, !tbaa !26, !noalias !124
  %3292 = fmul <8 x double> %3282, %3291
  %3293 = icmp eq <8 x i64> %3286, %3267
  %3294 = select <8 x i1> %3293, <8 x double> zeroinitializer, <8 x double> %3292
  %3295 = fadd <8 x double> %3275, %3294
  %3296 = fadd <8 x double> %3280, splat (double -1.000000e+00)
  %3297 = fmul <8 x double> %3296, %3291
  %3298 = select <8 x i1> %3293, <8 x double> zeroinitializer, <8 x double> %3297
  %3299 = fadd <8 x double> %3274, %3298
  br label %3300

3300:                                             ; preds = %3288, %3266
  %3301 = phi <8 x double> [ %3295, %3288 ], [ %3275, %3266 ]
  %3302 = phi <8 x double> [ %3299, %3288 ], [ %3274, %3266 ]
  br i1 %3285, label %3303, label %3309

3303:                                             ; preds = %3300
  %3304 = fneg <8 x double> %3282
  %3305 = icmp eq <8 x i64> %3286, %3267
  %3306 = select <8 x i1> %3305, <8 x double> %3271, <8 x double> %3304
  %3307 = fsub <8 x double> splat (double 1.000000e+00), %3280
  %3308 = select <8 x i1> %3305, <8 x double> %3272, <8 x double> %3307
  br label %3309

3309:                                             ; preds = %3303, %3300
  %3310 = phi <8 x double> [ %3308, %3303 ], [ %3272, %3300 ]
  %3311 = phi <8 x double> [ %3306, %3303 ], [ %3271, %3300 ]
  %3312 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3286)
  %3313 = icmp eq i64 %3312, 0
  br i1 %3313, label %3339, label %3314

3314:                                             ; preds = %3309
  %3315 = load ptr, ptr %3264, align 8, !tbaa !85, !noalias !124
  %3316 = getelementptr inbounds nuw <8 x double>, ptr %3315, i64 %3276
  %3317 = load <8 x double>, ptr %3316, align 64, !tbaa !26, !noalias !124
  %3318 = load ptr, ptr %3265, align 8, !tbaa !87, !noalias !124
  %3319 = getelementptr inbounds nuw <8 x double>, ptr %3318, i64 %3276
  %3320 = load <8 x double>, ptr %3319, align 64, !tbaa !26, !noalias !124
  %3321 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3320, <8 x double> %2618, <8 x double> %3317)
  %3322 = icmp eq <8 x i64> %3286, zeroinitializer
  %3323 = select <8 x i1> %3322, <8 x double> zeroinitializer, <8 x double> %3321
  %3324 = fadd <8 x double> %3301, %3323
  %3325 = select <8 x i1> %3322, <8 x double> zeroinitializer, <8 x double> %3320
  %3326 = fadd <8 x double> %3302, %3325
  %3327 = fcmp olt <8 x double> %3269, %3282
  %3328 = select <8 x i1> %3322, <8 x i1> splat (i1 true), <8 x i1> %3327
  %3329 = select <8 x i1> %3328, <8 x double> %3269, <8 x double> %3282
  %3330 = fsub <8 x double> splat (double 1.000000e+00), %3280
  %3331 = fcmp ogt <8 x double> %3270, %3330
  %3332 = select <8 x i1> %3322, <8 x i1> splat (i1 true), <8 x i1> %3331
  %3333 = select <8 x i1> %3332, <8 x double> %3270, <8 x double> %3330
  %3334 = uitofp nneg i64 %3276 to double
  %3335 = insertelement <8 x double> poison, double %3334, i64 0
  %3336 = shufflevector <8 x double> %3335, <8 x double> poison, <8 x i32> zeroinitializer
  %3337 = select <8 x i1> %3322, <8 x double> %3273, <8 x double> %3336
  %3338 = icmp samesign ugt i64 %3268, 1
  br i1 %3338, label %3266, label %3339, !llvm.loop !109

3339:                                             ; preds = %3309, %3314
  %3340 = phi <8 x double> [ %3337, %3314 ], [ %3273, %3309 ]
  %3341 = phi <8 x double> [ %3333, %3314 ], [ %3270, %3309 ]
  %3342 = phi <8 x double> [ %3329, %3314 ], [ %3269, %3309 ]
  %3343 = phi <8 x double> [ %3324, %3314 ], [ %3301, %3309 ]
  %3344 = phi <8 x double> [ %3326, %3314 ], [ %3302, %3309 ]
  %3345 = fdiv <8 x double> %3311, %3310
  br label %3346

3346:                                             ; preds = %3339, %3250
  %3347 = phi <8 x double> [ %3254, %3250 ], [ %3340, %3339 ]
  %3348 = phi <8 x double> [ zeroinitializer, %3250 ], [ %3341, %3339 ]
  %3349 = phi <8 x double> [ splat (double 1.000000e+09), %3250 ], [ %3342, %3339 ]
  %3350 = phi <8 x double> [ zeroinitializer, %3250 ], [ %3343, %3339 ]
  %3351 = phi <8 x double> [ zeroinitializer, %3250 ], [ %3344, %3339 ]
  %3352 = phi <8 x double> [ splat (double 1.000000e+09), %3250 ], [ %3345, %3339 ]
  %3353 = fsub <8 x double> %2618, %3352
  %3354 = fcmp ogt <8 x double> %3348, splat (double 1.000000e-09)
  %3355 = select <8 x i1> %3354, <8 x double> %3348, <8 x double> splat (double 1.000000e-09)
  %3356 = fdiv <8 x double> %3349, %3355
  %3357 = fadd <8 x double> %2618, %3356
  %3358 = load <8 x double>, ptr %3232, align 64, !tbaa !26, !noalias !121
  %3359 = select <8 x i1> %3239, <8 x double> %3350, <8 x double> %3358
  store <8 x double> %3359, ptr %3232, align 64, !tbaa !26, !noalias !121
  %3360 = getelementptr inbounds nuw i8, ptr %3198, i64 7936
  %3361 = load <8 x double>, ptr %3360, align 64, !tbaa !26, !noalias !121
  %3362 = select <8 x i1> %3239, <8 x double> %3351, <8 x double> %3361
  store <8 x double> %3362, ptr %3360, align 64, !tbaa !26, !noalias !121
  %3363 = getelementptr inbounds nuw i8, ptr %3198, i64 8000
  %3364 = load <8 x double>, ptr %3363, align 64, !tbaa !26, !noalias !121
  %3365 = select <8 x i1> %3239, <8 x double> %3347, <8 x double> %3364
  store <8 x double> %3365, ptr %3363, align 64, !tbaa !26, !noalias !121
  %3366 = getelementptr inbounds nuw i8, ptr %3198, i64 8064
  %3367 = load <8 x double>, ptr %3366, align 64, !tbaa !26, !noalias !121
  %3368 = select <8 x i1> %3239, <8 x double> %2618, <8 x double> %3367
  store <8 x double> %3368, ptr %3366, align 64, !tbaa !26, !noalias !121
  %3369 = select <8 x i1> %3239, <8 x double> %3353, <8 x double> %3234
  store <8 x double> %3369, ptr %3233, align 64, !tbaa !26, !noalias !121
  %3370 = select <8 x i1> %3239, <8 x double> %3357, <8 x double> %3237
  store <8 x double> %3370, ptr %3236, align 64, !tbaa !26, !noalias !121
  br label %3371

3371:                                             ; preds = %3242, %3346
  %3372 = phi <8 x double> [ %3249, %3242 ], [ %3365, %3346 ]
  %3373 = phi <8 x double> [ %3247, %3242 ], [ %3368, %3346 ]
  %3374 = phi <8 x double> [ %3245, %3242 ], [ %3362, %3346 ]
  %3375 = phi <8 x double> [ %3243, %3242 ], [ %3359, %3346 ]
  %3376 = fsub <8 x double> %2618, %3373
  %3377 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3374, <8 x double> %3376, <8 x double> %3375)
  %3378 = getelementptr inbounds nuw i8, ptr %3198, i64 6464
  %3379 = load <8 x double>, ptr %3378, align 64, !tbaa !26, !noalias !118
  %3380 = getelementptr inbounds nuw i8, ptr %3198, i64 5888
  %3381 = load <8 x double>, ptr %3380, align 64, !tbaa !26, !noalias !118
  %3382 = getelementptr inbounds nuw i8, ptr %3198, i64 7424
  %3383 = load <8 x double>, ptr %3382, align 64, !tbaa !26, !noalias !118
  %3384 = fneg <8 x double> %3383
  %3385 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3379, <8 x double> %3381, <8 x double> %3384)
  %3386 = getelementptr inbounds nuw i8, ptr %3198, i64 7360
  %3387 = load <8 x double>, ptr %3386, align 64, !tbaa !26, !noalias !118
  %3388 = fadd <8 x double> %3379, %3387
  %3389 = getelementptr inbounds nuw i8, ptr %3198, i64 8320
  %3390 = load <8 x i64>, ptr %3389, align 64, !tbaa !26, !noalias !118
  %3391 = getelementptr inbounds nuw i8, ptr %3198, i64 8672
  %3392 = load ptr, ptr %3391, align 32, !tbaa !94, !noalias !118
  %3393 = load <8 x double>, ptr %3392, align 64, !tbaa !26, !noalias !118
  %3394 = fmul <8 x double> %3379, %3393
  %3395 = icmp eq <8 x i64> %3390, zeroinitializer
  %3396 = select <8 x i1> %3395, <8 x double> %3385, <8 x double> %3394
  %3397 = getelementptr inbounds nuw i8, ptr %3198, i64 8680
  %3398 = load ptr, ptr %3397, align 8, !tbaa !95, !noalias !118
  %3399 = load <8 x double>, ptr %3398, align 64, !tbaa !26, !noalias !118
  %3400 = fsub <8 x double> splat (double 1.000000e+00), %3399
  %3401 = fmul <8 x double> %3379, %3400
  %3402 = select <8 x i1> %3395, <8 x double> %3388, <8 x double> %3401
  %3403 = fneg <8 x double> %3402
  %3404 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3403, <8 x double> %2618, <8 x double> %3396)
  %3405 = load i64, ptr %141, align 16, !tbaa !21, !noalias !118
  %3406 = sitofp i64 %3405 to double
  %3407 = insertelement <8 x double> poison, double %3406, i64 0
  %3408 = shufflevector <8 x double> %3407, <8 x double> poison, <8 x i32> zeroinitializer
  %3409 = fcmp olt <8 x double> %3372, %3408
  %3410 = and <8 x i1> %3205, %3409
  %3411 = fcmp ogt <8 x double> %3377, zeroinitializer
  %3412 = fcmp oge <8 x double> %3404, zeroinitializer
  %3413 = and <8 x i1> %3411, %3412
  %3414 = and <8 x i1> %3413, %3410
  %3415 = sext <8 x i1> %3414 to <8 x i64>
  %3416 = xor <8 x i64> %3415, splat (i64 -1)
  %3417 = fadd <8 x double> %3377, %3404
  %3418 = fcmp ogt <8 x double> %3417, zeroinitializer
  %3419 = select <8 x i1> %3418, <8 x i1> %3410, <8 x i1> zeroinitializer
  %3420 = select <8 x i1> %3419, <8 x i64> %3416, <8 x i64> zeroinitializer
  %3421 = or <8 x i64> %3420, %3415
  %3422 = fmul <8 x double> %3194, %3404
  %3423 = select <8 x i1> %3414, <8 x double> %3422, <8 x double> zeroinitializer
  %3424 = icmp eq <8 x i64> %3421, zeroinitializer
  %3425 = select <8 x i1> %3424, <8 x double> %3230, <8 x double> %3423
  %3426 = select <8 x i1> %3424, <8 x double> %3231, <8 x double> %2618
  %3427 = getelementptr inbounds nuw i8, ptr %3198, i64 6016
  store <8 x double> %3425, ptr %3427, align 64, !tbaa !26, !noalias !118
  %3428 = getelementptr inbounds nuw i8, ptr %3198, i64 5952
  store <8 x double> %3426, ptr %3428, align 64, !tbaa !26, !noalias !118
  %3429 = fmul <8 x double> %3194, %3377
  %3430 = fmul <8 x double> %3194, %3417
  %3431 = icmp eq <8 x i64> %3420, zeroinitializer
  %3432 = select <8 x i1> %3431, <8 x double> zeroinitializer, <8 x double> %3430
  %3433 = select <8 x i1> %3414, <8 x double> %3429, <8 x double> %3432
  %3434 = getelementptr inbounds nuw i8, ptr %3198, i64 6080
  store <8 x double> %3433, ptr %3434, align 64, !tbaa !26, !noalias !118
  %3435 = load i64, ptr %141, align 16, !tbaa !21, !noalias !118
  %3436 = sitofp i64 %3435 to double
  %3437 = insertelement <8 x double> poison, double %3436, i64 0
  %3438 = shufflevector <8 x double> %3437, <8 x double> poison, <8 x i32> zeroinitializer
  %3439 = select <8 x i1> %3424, <8 x double> %3438, <8 x double> %3372
  %3440 = getelementptr inbounds nuw i8, ptr %3198, i64 6144
  store <8 x double> %3439, ptr %3440, align 64, !tbaa !26, !noalias !118
  %3441 = add nuw nsw i64 %3196, 1
  %3442 = load i64, ptr %178, align 8, !tbaa !20, !noalias !118
  %3443 = icmp slt i64 %3441, %3442
  br i1 %3443, label %3195, label %3444, !llvm.loop !110

3444:                                             ; preds = %3371, %3152
  %3445 = phi i64 [ %3188, %3152 ], [ %3442, %3371 ]
  %3446 = icmp sgt i64 %3445, 0
  br i1 %3446, label %3576, label %3447

3447:                                             ; preds = %3444, %3189
  %3448 = phi i64 [ %3445, %3444 ], [ %2380, %3189 ]
  %3449 = load <8 x double>, ptr %187, align 64, !tbaa !26
  br label %3477

3450:                                             ; preds = %3648
  %3451 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3452 = icmp sgt i64 %3672, 0
  br i1 %3452, label %3453, label %3477

3453:                                             ; preds = %3450
  %3454 = load ptr, ptr %151, align 8, !tbaa !28
  br label %3455

3455:                                             ; preds = %3453, %3455
  %3456 = phi <8 x double> [ zeroinitializer, %3453 ], [ %3469, %3455 ]
  %3457 = phi <8 x double> [ zeroinitializer, %3453 ], [ %3474, %3455 ]
  %3458 = phi i64 [ 0, %3453 ], [ %3475, %3455 ]
  %3459 = getelementptr inbounds nuw %struct.Piece, ptr %3454, i64 %3458
  %3460 = getelementptr inbounds nuw i8, ptr %3459, i64 8448
  %3461 = load <8 x i64>, ptr %3460, align 64, !tbaa !26
  %3462 = getelementptr inbounds nuw i8, ptr %3459, i64 128
  %3463 = load <8 x double>, ptr %3462, align 64, !tbaa !26
  %3464 = getelementptr inbounds nuw i8, ptr %3459, i64 6720
  %3465 = load <8 x double>, ptr %3464, align 64, !tbaa !26
  %3466 = fmul <8 x double> %3463, %3465
  %3467 = icmp eq <8 x i64> %3461, zeroinitializer
  %3468 = select <8 x i1> %3467, <8 x double> %3466, <8 x double> zeroinitializer
  %3469 = fadd <8 x double> %3456, %3468
  %3470 = getelementptr inbounds nuw i8, ptr %3459, i64 6592
  %3471 = load <8 x double>, ptr %3470, align 64, !tbaa !26
  %3472 = fmul <8 x double> %3463, %3471
  %3473 = select <8 x i1> %3467, <8 x double> %3472, <8 x double> zeroinitializer
  %3474 = fadd <8 x double> %3457, %3473
  %3475 = add nuw nsw i64 %3458, 1
  %3476 = icmp eq i64 %3475, %3672
  br i1 %3476, label %3477, label %3455, !llvm.loop !127

3477:                                             ; preds = %3455, %3447, %3450
  %3478 = phi i1 [ false, %3450 ], [ false, %3447 ], [ true, %3455 ]
  %3479 = phi <8 x double> [ %3451, %3450 ], [ %3449, %3447 ], [ %3451, %3455 ]
  %3480 = phi i64 [ %3672, %3450 ], [ %3448, %3447 ], [ %3672, %3455 ]
  %3481 = phi <8 x double> [ zeroinitializer, %3450 ], [ zeroinitializer, %3447 ], [ %3474, %3455 ]
  %3482 = phi <8 x double> [ zeroinitializer, %3450 ], [ zeroinitializer, %3447 ], [ %3469, %3455 ]
  %3483 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %3484 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3485 = fsub <8 x double> %3479, %3484
  %3486 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3483, <8 x double> %3485, <8 x double> %3482)
  %3487 = fadd <8 x double> %3481, %3483
  store <8 x double> %3486, ptr %223, align 64, !tbaa !26
  %3488 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %3489 = fcmp ule <8 x double> %3488, zeroinitializer
  %3490 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3491 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3488, <8 x double> splat (double 5.000000e-01), <8 x double> %3490)
  %3492 = fsub <8 x double> %3491, %3479
  %3493 = fcmp ogt <8 x double> %3488, splat (double 1.000000e-30)
  %3494 = select <8 x i1> %3493, <8 x double> %3488, <8 x double> splat (double 1.000000e-30)
  %3495 = fdiv <8 x double> %3492, %3494
  %3496 = fcmp ogt <8 x double> %3495, zeroinitializer
  %3497 = select <8 x i1> %3496, <8 x double> %3495, <8 x double> zeroinitializer
  %3498 = fcmp olt <8 x double> %3497, splat (double 1.000000e+00)
  %3499 = select <8 x i1> %3498, <8 x double> %3497, <8 x double> splat (double 1.000000e+00)
  %3500 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %3501 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %3502 = icmp eq <8 x i64> %3501, zeroinitializer
  %3503 = select <8 x i1> %3502, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %3504 = select <8 x i1> %3489, <8 x double> %3503, <8 x double> %3499
  %3505 = fmul <8 x double> %3500, %3504
  %3506 = fcmp ule <8 x double> %3505, zeroinitializer
  %3507 = fcmp uge <8 x double> %3505, %3500
  %3508 = or <8 x i1> %3506, %3507
  %3509 = or <8 x i1> %3489, %3508
  %3510 = fdiv <8 x double> %3500, %3494
  %3511 = select <8 x i1> %3509, <8 x double> zeroinitializer, <8 x double> %3510
  %3512 = fadd <8 x double> %3487, %3511
  %3513 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %3514 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3515 = fdiv <8 x double> splat (double 2.000000e+00), %3514
  %3516 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3517 = icmp eq <8 x i64> %3513, zeroinitializer
  %3518 = select <8 x i1> %3517, <8 x double> %3516, <8 x double> %3515
  %3519 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3520 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %3521 = fmul <8 x double> %3519, %3520
  %3522 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %3523 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %3524 = fmul <8 x double> %3523, splat (double 5.000000e-01)
  %3525 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3524, <8 x double> %3519, <8 x double> %3522)
  %3526 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %3527 = fmul <8 x double> %3519, %3526
  %3528 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3521, <8 x double> %3525, <8 x double> %3527)
  %3529 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3530 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3531 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %3532 = fmul <8 x double> %3520, %3531
  %3533 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3524, <8 x double> %3531, <8 x double> %3522)
  %3534 = fmul <8 x double> %3526, %3531
  %3535 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3532, <8 x double> %3533, <8 x double> %3534)
  %3536 = fmul <8 x double> %3530, %3535
  %3537 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3529, <8 x double> %3528, <8 x double> %3536)
  %3538 = fmul <8 x double> %3479, %3520
  %3539 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3524, <8 x double> %3479, <8 x double> %3522)
  %3540 = fmul <8 x double> %3479, %3526
  %3541 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3538, <8 x double> %3539, <8 x double> %3540)
  %3542 = fneg <8 x double> %3518
  %3543 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %3544 = fneg <8 x double> %3543
  %3545 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3542, <8 x double> %3528, <8 x double> %3544)
  %3546 = select <8 x i1> %3517, <8 x double> %3537, <8 x double> %3545
  %3547 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3518, <8 x double> %3541, <8 x double> %3546)
  %3548 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3523, <8 x double> %3479, <8 x double> %3522)
  %3549 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3520, <8 x double> %3548, <8 x double> %3526)
  %3550 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %3551 = fcmp une <8 x double> %3550, zeroinitializer
  %3552 = fadd <8 x double> %3486, %3547
  %3553 = fsub <8 x double> %3552, %3505
  %3554 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3518, <8 x double> %3549, <8 x double> %3512)
  %3555 = fdiv <8 x double> %3553, %3554
  %3556 = fsub <8 x double> %3479, %3555
  %3557 = select <8 x i1> %3551, <8 x double> %3479, <8 x double> %3556
  store <8 x double> %3557, ptr %187, align 64, !tbaa !26
  %3558 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %3559 = fneg <8 x double> %3529
  %3560 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3559, <8 x double> %3558, <8 x double> %3505)
  %3561 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %3562 = fneg <8 x double> %3530
  %3563 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3562, <8 x double> %3561, <8 x double> %3560)
  %3564 = fdiv <8 x double> %3563, %3516
  %3565 = load <8 x double>, ptr %226, align 64, !tbaa !26
  %3566 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3559, <8 x double> %3565, <8 x double> %3486)
  %3567 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %3568 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3562, <8 x double> %3567, <8 x double> %3566)
  %3569 = fdiv <8 x double> %3568, %3516
  %3570 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3505, <8 x double> %3514, <8 x double> %3558)
  %3571 = select <8 x i1> %3517, <8 x double> %3564, <8 x double> %3570
  %3572 = load <8 x double>, ptr %228, align 64, !tbaa !26
  %3573 = select <8 x i1> %3551, <8 x double> %3572, <8 x double> %3571
  store <8 x double> %3573, ptr %228, align 64, !tbaa !26
  %3574 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %3575 = select <8 x i1> %3551, <8 x double> %3574, <8 x double> %3569
  store <8 x double> %3575, ptr %229, align 64, !tbaa !26
  br i1 %3478, label %3674, label %3962

3576:                                             ; preds = %3444, %3648
  %3577 = phi i64 [ %3671, %3648 ], [ 0, %3444 ]
  %3578 = load ptr, ptr %151, align 8, !tbaa !28
  %3579 = getelementptr inbounds nuw %struct.Piece, ptr %3578, i64 %3577
  %3580 = getelementptr inbounds nuw i8, ptr %3579, i64 5952
  %3581 = load <8 x double>, ptr %3580, align 64, !tbaa !26
  %3582 = getelementptr inbounds nuw i8, ptr %3579, i64 6144
  %3583 = load <8 x double>, ptr %3582, align 64, !tbaa !26
  %3584 = getelementptr inbounds nuw i8, ptr %3579, i64 8568
  %3585 = load ptr, ptr %3584, align 8, !tbaa !88
  %3586 = getelementptr inbounds nuw i8, ptr %3579, i64 8576
  %3587 = load ptr, ptr %3586, align 64, !tbaa !89
  %3588 = getelementptr inbounds nuw i8, ptr %3579, i64 8520
  %3589 = load ptr, ptr %3588, align 8, !tbaa !59
  %3590 = load i64, ptr %141, align 16, !tbaa !21
  %3591 = icmp sgt i64 %3590, 0
  br i1 %3591, label %3607, label %3592

3592:                                             ; preds = %3607, %3576
  %3593 = getelementptr inbounds nuw i8, ptr %3579, i64 8320
  %3594 = load <8 x i64>, ptr %3593, align 64, !tbaa !26
  %3595 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3594)
  %3596 = icmp eq i64 %3595, 0
  %3597 = load i64, ptr %142, align 8, !tbaa !22
  %3598 = icmp sgt i64 %3597, 0
  br i1 %3596, label %3604, label %3599

3599:                                             ; preds = %3592
  br i1 %3598, label %3600, label %3648

3600:                                             ; preds = %3599
  %3601 = getelementptr inbounds nuw i8, ptr %3579, i64 8672
  %3602 = getelementptr inbounds nuw i8, ptr %3579, i64 8680
  %3603 = getelementptr inbounds nuw i8, ptr %3579, i64 8640
  br label %3623

3604:                                             ; preds = %3592
  br i1 %3598, label %3605, label %3648

3605:                                             ; preds = %3604
  %3606 = getelementptr inbounds nuw i8, ptr %3579, i64 8640
  br label %3641

3607:                                             ; preds = %3576, %3607
  %3608 = phi <8 x double> [ %3620, %3607 ], [ %3581, %3576 ]
  %3609 = phi i64 [ %3610, %3607 ], [ %3590, %3576 ]
  %3610 = add nsw i64 %3609, -1
  %3611 = uitofp nneg i64 %3610 to double
  %3612 = insertelement <8 x double> poison, double %3611, i64 0
  %3613 = shufflevector <8 x double> %3612, <8 x double> poison, <8 x i32> zeroinitializer
  %3614 = fcmp ugt <8 x double> %3583, %3613
  %3615 = getelementptr inbounds nuw <8 x double>, ptr %3585, i64 %3610
  %3616 = load <8 x double>, ptr %3615, align 64, !tbaa !26
  %3617 = getelementptr inbounds nuw <8 x double>, ptr %3587, i64 %3610
  %3618 = load <8 x double>, ptr %3617, align 64, !tbaa !26
  %3619 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3618, <8 x double> %3608, <8 x double> %3616)
  %3620 = select <8 x i1> %3614, <8 x double> %3619, <8 x double> %3581
  %3621 = getelementptr inbounds nuw <8 x double>, ptr %3589, i64 %3610
  store <8 x double> %3620, ptr %3621, align 64, !tbaa !26
  %3622 = icmp samesign ugt i64 %3609, 1
  br i1 %3622, label %3607, label %3592, !llvm.loop !128

3623:                                             ; preds = %3600, %3623
  %3624 = phi i64 [ 0, %3600 ], [ %3638, %3623 ]
  %3625 = phi <8 x double> [ %3581, %3600 ], [ %3635, %3623 ]
  %3626 = load <8 x i64>, ptr %3593, align 64, !tbaa !26
  %3627 = load ptr, ptr %3601, align 32, !tbaa !94
  %3628 = getelementptr inbounds nuw <8 x double>, ptr %3627, i64 %3624
  %3629 = load <8 x double>, ptr %3628, align 64, !tbaa !26
  %3630 = load ptr, ptr %3602, align 8, !tbaa !95
  %3631 = getelementptr inbounds nuw <8 x double>, ptr %3630, i64 %3624
  %3632 = load <8 x double>, ptr %3631, align 64, !tbaa !26
  %3633 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3632, <8 x double> %3625, <8 x double> %3629)
  %3634 = icmp eq <8 x i64> %3626, zeroinitializer
  %3635 = select <8 x i1> %3634, <8 x double> %3581, <8 x double> %3633
  %3636 = load ptr, ptr %3603, align 64, !tbaa !129
  %3637 = getelementptr inbounds nuw <8 x double>, ptr %3636, i64 %3624
  store <8 x double> %3635, ptr %3637, align 64, !tbaa !26
  %3638 = add nuw nsw i64 %3624, 1
  %3639 = load i64, ptr %142, align 8, !tbaa !22
  %3640 = icmp slt i64 %3638, %3639
  br i1 %3640, label %3623, label %3648, !llvm.loop !130

3641:                                             ; preds = %3605, %3641
  %3642 = phi i64 [ 0, %3605 ], [ %3645, %3641 ]
  %3643 = load ptr, ptr %3606, align 64, !tbaa !129
  %3644 = getelementptr inbounds nuw <8 x double>, ptr %3643, i64 %3642
  store <8 x double> %3581, ptr %3644, align 64, !tbaa !26
  %3645 = add nuw nsw i64 %3642, 1
  %3646 = load i64, ptr %142, align 8, !tbaa !22
  %3647 = icmp slt i64 %3645, %3646
  br i1 %3647, label %3641, label %3648, !llvm.loop !131

3648:                                             ; preds = %3623, %3641, %3599, %3604
  %3649 = phi <8 x double> [ %3581, %3604 ], [ %3581, %3599 ], [ %3581, %3641 ], [ %3635, %3623 ]
  %3650 = load <8 x i64>, ptr %3593, align 64, !tbaa !26
  %3651 = getelementptr inbounds nuw i8, ptr %3579, i64 6656
  %3652 = load <8 x double>, ptr %3651, align 64, !tbaa !26
  %3653 = icmp eq <8 x i64> %3650, zeroinitializer
  %3654 = select <8 x i1> %3653, <8 x double> zeroinitializer, <8 x double> %3652
  %3655 = fsub <8 x double> splat (double 1.000000e+00), %3654
  %3656 = getelementptr inbounds nuw i8, ptr %3579, i64 5888
  %3657 = load <8 x double>, ptr %3656, align 64, !tbaa !26
  %3658 = fmul <8 x double> %3654, %3657
  %3659 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3655, <8 x double> %3649, <8 x double> %3658)
  %3660 = getelementptr inbounds nuw i8, ptr %3579, i64 6848
  store <8 x double> %3659, ptr %3660, align 64, !tbaa !26
  %3661 = getelementptr inbounds nuw i8, ptr %3579, i64 6592
  %3662 = load <8 x double>, ptr %3661, align 64, !tbaa !26
  %3663 = fsub <8 x double> %3657, %3649
  %3664 = fmul <8 x double> %3663, %3662
  %3665 = getelementptr inbounds nuw i8, ptr %3579, i64 6720
  store <8 x double> %3664, ptr %3665, align 64, !tbaa !26
  %3666 = getelementptr inbounds nuw i8, ptr %3579, i64 3200
  %3667 = load <8 x double>, ptr %3666, align 64, !tbaa !26
  %3668 = fdiv <8 x double> %3664, %3667
  %3669 = fsub <8 x double> %3657, %3668
  %3670 = getelementptr inbounds nuw i8, ptr %3579, i64 6784
  store <8 x double> %3669, ptr %3670, align 64, !tbaa !26
  %3671 = add nuw nsw i64 %3577, 1
  %3672 = load i64, ptr %178, align 8, !tbaa !20
  %3673 = icmp slt i64 %3671, %3672
  br i1 %3673, label %3576, label %3450, !llvm.loop !132

3674:                                             ; preds = %3477, %3896
  %3675 = phi i64 [ %3959, %3896 ], [ 0, %3477 ]
  %3676 = phi <8 x double> [ %3958, %3896 ], [ zeroinitializer, %3477 ]
  %3677 = load ptr, ptr %151, align 8, !tbaa !28
  %3678 = getelementptr inbounds nuw %struct.Piece, ptr %3677, i64 %3675
  %3679 = getelementptr inbounds nuw i8, ptr %3678, i64 6016
  %3680 = load <8 x double>, ptr %3679, align 64, !tbaa !26
  %3681 = getelementptr inbounds nuw i8, ptr %3678, i64 6080
  %3682 = load <8 x double>, ptr %3681, align 64, !tbaa !26
  %3683 = fadd <8 x double> %3680, %3682
  %3684 = getelementptr inbounds nuw i8, ptr %3678, i64 5952
  %3685 = load <8 x double>, ptr %3684, align 64, !tbaa !26
  %3686 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %3687 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3686, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3688 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3686, <8 x double> %3687, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3689 = getelementptr inbounds nuw i8, ptr %3678, i64 7168
  %3690 = load <8 x double>, ptr %3689, align 64, !tbaa !26
  %3691 = getelementptr inbounds nuw i8, ptr %3678, i64 1280
  %3692 = load <8 x double>, ptr %3691, align 64, !tbaa !26
  %3693 = fmul <8 x double> %3690, %3692
  %3694 = getelementptr inbounds nuw i8, ptr %3678, i64 6848
  %3695 = load <8 x double>, ptr %3694, align 64, !tbaa !26
  %3696 = fsub <8 x double> %3695, %3685
  %3697 = fmul <8 x double> %3693, %3696
  %3698 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3688, <8 x double> %3683, <8 x double> %3697)
  %3699 = getelementptr inbounds nuw i8, ptr %3678, i64 5696
  %3700 = load <8 x double>, ptr %3699, align 64, !tbaa !26, !noalias !133
  %3701 = getelementptr inbounds nuw i8, ptr %3678, i64 4160
  %3702 = load <8 x double>, ptr %3701, align 64, !tbaa !26, !noalias !133
  %3703 = fneg <8 x double> %3700
  %3704 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3703, <8 x double> %3702, <8 x double> %3683)
  %3705 = getelementptr inbounds nuw i8, ptr %3678, i64 5760
  %3706 = load <8 x double>, ptr %3705, align 64, !tbaa !26, !noalias !133
  %3707 = getelementptr inbounds nuw i8, ptr %3678, i64 5056
  %3708 = load <8 x double>, ptr %3707, align 64, !tbaa !26, !noalias !133
  %3709 = fneg <8 x double> %3706
  %3710 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3709, <8 x double> %3708, <8 x double> %3704)
  %3711 = getelementptr inbounds nuw i8, ptr %3678, i64 5632
  %3712 = load <8 x double>, ptr %3711, align 64, !tbaa !26, !noalias !133
  %3713 = fdiv <8 x double> %3710, %3712
  %3714 = getelementptr inbounds nuw i8, ptr %3678, i64 1600
  %3715 = load <8 x double>, ptr %3714, align 64, !tbaa !26, !noalias !133
  %3716 = fsub <8 x double> %3715, %3713
  %3717 = getelementptr inbounds nuw i8, ptr %3678, i64 4032
  %3718 = load <8 x double>, ptr %3717, align 64, !tbaa !26, !noalias !133
  %3719 = getelementptr inbounds nuw i8, ptr %3678, i64 7552
  %3720 = load <8 x double>, ptr %3719, align 64, !tbaa !26, !noalias !133
  %3721 = fsub <8 x double> %3718, %3720
  %3722 = getelementptr inbounds nuw i8, ptr %3678, i64 3904
  %3723 = load <8 x double>, ptr %3722, align 64, !tbaa !26, !noalias !133
  %3724 = getelementptr inbounds nuw i8, ptr %3678, i64 2944
  %3725 = load <8 x double>, ptr %3724, align 64, !tbaa !26, !noalias !133
  %3726 = getelementptr inbounds nuw i8, ptr %3678, i64 8320
  %3727 = load <8 x i64>, ptr %3726, align 64, !tbaa !26, !noalias !133
  %3728 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3727)
  %3729 = icmp eq i64 %3728, 0
  br i1 %3729, label %3858, label %3730

3730:                                             ; preds = %3674
  %3731 = fcmp ogt <8 x double> %3721, %3716
  %3732 = getelementptr inbounds nuw i8, ptr %3678, i64 7680
  %3733 = load <8 x double>, ptr %3732, align 64, !tbaa !26, !noalias !133
  %3734 = fcmp oeq <8 x double> %3733, zeroinitializer
  %3735 = select <8 x i1> %3734, <8 x i1> %3731, <8 x i1> zeroinitializer
  %3736 = select <8 x i1> %3735, <8 x i64> %3727, <8 x i64> zeroinitializer
  %3737 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3736)
  %3738 = icmp eq i64 %3737, 0
  br i1 %3738, label %3811, label %3739

3739:                                             ; preds = %3730
  %3740 = fsub <8 x double> %3721, %3716
  %3741 = getelementptr inbounds nuw i8, ptr %3678, i64 832
  %3742 = load <8 x double>, ptr %3741, align 64, !tbaa !26, !noalias !133
  %3743 = fdiv <8 x double> %3740, %3742
  %3744 = getelementptr inbounds nuw i8, ptr %3678, i64 8552
  %3745 = load ptr, ptr %3744, align 8, !tbaa !69, !noalias !133
  %3746 = load i64, ptr %141, align 16, !tbaa !21, !noalias !133
  %3747 = add nsw i64 %3746, -1
  %3748 = getelementptr inbounds <8 x double>, ptr %3745, i64 %3747
  %3749 = load <8 x double>, ptr %3748, align 64, !tbaa !26, !noalias !133
  %3750 = icmp sgt i64 %3746, 1
  br i1 %3750, label %3751, label %3803

3751:                                             ; preds = %3739
  %3752 = getelementptr inbounds nuw i8, ptr %3678, i64 8512
  %3753 = load i64, ptr %3752, align 64, !tbaa !31, !noalias !133
  %3754 = getelementptr inbounds nuw i8, ptr %3678, i64 4672
  %3755 = getelementptr inbounds nuw i8, ptr %3678, i64 1536
  %3756 = getelementptr inbounds nuw i8, ptr %3678, i64 8608
  br label %3757

3757:                                             ; preds = %3751, %3800
  %3758 = phi <8 x double> [ %3723, %3751 ], [ %3795, %3800 ]
  %3759 = phi i64 [ %3747, %3751 ], [ %3801, %3800 ]
  %3760 = phi <8 x double> [ %3749, %3751 ], [ %3783, %3800 ]
  %3761 = phi <8 x i64> [ %3736, %3751 ], [ %3787, %3800 ]
  %3762 = phi <8 x double> [ %3743, %3751 ], [ %3794, %3800 ]
  %3763 = icmp slt i64 %3759, %3753
  br i1 %3763, label %3764, label %3770

3764:                                             ; preds = %3757
  %3765 = load ptr, ptr %3756, align 32, !tbaa !74, !noalias !133
  %3766 = getelementptr inbounds nuw <8 x double>, ptr %3765, i64 %3759
  %3767 = load <8 x double>, ptr %3766, align 64, !tbaa !26, !noalias !133
  %3768 = load <8 x double>, ptr %3755, align 64, !tbaa !26, !noalias !133
  %3769 = fmul <8 x double> %3767, %3768
  br label %3778

3770:                                             ; preds = %3757
  %3771 = load <8 x double>, ptr %3754, align 64, !tbaa !26, !noalias !133
  %3772 = load <8 x double>, ptr %3755, align 64, !tbaa !26, !noalias !133
  %3773 = load ptr, ptr %3756, align 32, !tbaa !74, !noalias !133
  %3774 = getelementptr inbounds nuw <8 x double>, ptr %3773, i64 %3759
  %3775 = load <8 x double>, ptr %3774, align 64, !tbaa !26, !noalias !133
  %3776 = fsub <8 x double> %3771, %3772
  %3777 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3775, <8 x double> %3776, <8 x double> %3772)
  br label %3778

3778:                                             ; preds = %3770, %3764
  %3779 = phi <8 x double> [ %3769, %3764 ], [ %3777, %3770 ]
  %3780 = getelementptr inbounds nuw <8 x double>, ptr %3745, i64 %3759
  %3781 = load <8 x double>, ptr %3780, align 64, !tbaa !26, !noalias !133
  %3782 = icmp eq <8 x i64> %3761, zeroinitializer
  %3783 = select <8 x i1> %3782, <8 x double> %3760, <8 x double> %3781
  %3784 = fsub <8 x double> %3758, %3779
  %3785 = fmul <8 x double> %3784, %3783
  %3786 = fcmp olt <8 x double> %3785, %3762
  %3787 = select <8 x i1> %3786, <8 x i64> %3761, <8 x i64> zeroinitializer
  %3788 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3787)
  %3789 = icmp eq i64 %3788, 0
  br i1 %3789, label %3803, label %3790

3790:                                             ; preds = %3778
  %3791 = fneg <8 x double> %3783
  %3792 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3791, <8 x double> %3784, <8 x double> %3762)
  %3793 = icmp eq <8 x i64> %3787, zeroinitializer
  %3794 = select <8 x i1> %3793, <8 x double> %3762, <8 x double> %3792
  %3795 = select <8 x i1> %3793, <8 x double> %3758, <8 x double> %3779
  %3796 = icmp eq i64 %3759, 1
  br i1 %3796, label %3797, label %3800

3797:                                             ; preds = %3790
  %3798 = load <8 x double>, ptr %3745, align 64, !tbaa !26, !noalias !133
  %3799 = select <8 x i1> %3793, <8 x double> %3783, <8 x double> %3798
  br label %3803

3800:                                             ; preds = %3790
  %3801 = add nsw i64 %3759, -1
  %3802 = icmp sgt i64 %3759, 1
  br i1 %3802, label %3757, label %3803, !llvm.loop !75

3803:                                             ; preds = %3800, %3778, %3797, %3739
  %3804 = phi <8 x double> [ %3743, %3739 ], [ %3794, %3797 ], [ %3762, %3778 ], [ %3794, %3800 ]
  %3805 = phi <8 x double> [ %3723, %3739 ], [ %3795, %3797 ], [ %3758, %3778 ], [ %3795, %3800 ]
  %3806 = phi <8 x double> [ %3749, %3739 ], [ %3799, %3797 ], [ %3783, %3778 ], [ %3783, %3800 ]
  %3807 = fdiv <8 x double> %3804, %3806
  %3808 = fsub <8 x double> %3805, %3807
  %3809 = icmp eq <8 x i64> %3736, zeroinitializer
  %3810 = select <8 x i1> %3809, <8 x double> %3723, <8 x double> %3808
  br label %3811

3811:                                             ; preds = %3803, %3730
  %3812 = phi <8 x double> [ %3810, %3803 ], [ %3723, %3730 ]
  %3813 = getelementptr inbounds nuw i8, ptr %3678, i64 2560
  %3814 = load <8 x double>, ptr %3813, align 64, !tbaa !26, !noalias !133
  %3815 = getelementptr inbounds nuw i8, ptr %3678, i64 2624
  %3816 = load <8 x double>, ptr %3815, align 64, !tbaa !26, !noalias !133
  %3817 = getelementptr inbounds nuw i8, ptr %3678, i64 2688
  %3818 = load <8 x double>, ptr %3817, align 64, !tbaa !26, !noalias !133
  %3819 = getelementptr inbounds nuw i8, ptr %3678, i64 2752
  %3820 = load <8 x double>, ptr %3819, align 64, !tbaa !26, !noalias !133
  %3821 = load <8 x double>, ptr %3678, align 64, !tbaa !26, !noalias !133
  %3822 = fmul <8 x double> %3821, splat (double 2.000000e-05)
  br label %3823

3823:                                             ; preds = %3811, %3823
  %3824 = phi <8 x i64> [ splat (i64 -1), %3811 ], [ %3841, %3823 ]
  %3825 = phi i32 [ 0, %3811 ], [ %3842, %3823 ]
  %3826 = phi <8 x double> [ %3725, %3811 ], [ %3838, %3823 ]
  %3827 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3826, <8 x double> %3820, <8 x double> %3818)
  %3828 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3826, <8 x double> %3827, <8 x double> %3816)
  %3829 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3826, <8 x double> %3828, <8 x double> %3814)
  %3830 = fsub <8 x double> %3829, %3812
  %3831 = fmul <8 x double> %3826, splat (double 3.000000e+00)
  %3832 = fmul <8 x double> %3831, %3820
  %3833 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3818, <8 x double> splat (double 2.000000e+00), <8 x double> %3832)
  %3834 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3826, <8 x double> %3833, <8 x double> %3816)
  %3835 = fdiv <8 x double> %3830, %3834
  %3836 = fsub <8 x double> %3826, %3835
  %3837 = icmp eq <8 x i64> %3824, zeroinitializer
  %3838 = select <8 x i1> %3837, <8 x double> %3826, <8 x double> %3836
  %3839 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3835)
  %3840 = fcmp oge <8 x double> %3839, %3822
  %3841 = select <8 x i1> %3840, <8 x i64> %3824, <8 x i64> zeroinitializer
  %3842 = add nuw nsw i32 %3825, 1
  %3843 = icmp samesign ult i32 %3825, 3
  %3844 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3841)
  %3845 = icmp ne i64 %3844, 0
  %3846 = select i1 %3843, i1 %3845, i1 false
  br i1 %3846, label %3823, label %3847, !llvm.loop !76

3847:                                             ; preds = %3823
  %3848 = fmul <8 x double> %3821, splat (double 2.800000e-01)
  %3849 = fcmp ogt <8 x double> %3838, %3848
  %3850 = select <8 x i1> %3849, <8 x double> %3838, <8 x double> %3848
  %3851 = fcmp olt <8 x double> %3850, %3821
  %3852 = select <8 x i1> %3851, <8 x double> %3850, <8 x double> %3821
  %3853 = icmp eq <8 x i64> %3727, zeroinitializer
  %3854 = select <8 x i1> %3853, <8 x double> %3725, <8 x double> %3852
  %3855 = fcmp olt <8 x double> %3721, %3716
  %3856 = select <8 x i1> %3853, <8 x i1> splat (i1 true), <8 x i1> %3855
  %3857 = select <8 x i1> %3856, <8 x double> %3721, <8 x double> %3716
  br label %3858

3858:                                             ; preds = %3847, %3674
  %3859 = phi <8 x double> [ %3857, %3847 ], [ %3721, %3674 ]
  %3860 = phi <8 x double> [ %3854, %3847 ], [ %3725, %3674 ]
  %3861 = phi <8 x double> [ %3812, %3847 ], [ %3723, %3674 ]
  %3862 = fsub <8 x double> %3716, %3859
  %3863 = fsub <8 x double> %3860, %3725
  %3864 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3863)
  %3865 = getelementptr inbounds nuw i8, ptr %3678, i64 3072
  %3866 = load <8 x double>, ptr %3865, align 64, !tbaa !26
  %3867 = fsub <8 x double> %3862, %3866
  %3868 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3867)
  %3869 = getelementptr inbounds nuw i8, ptr %3678, i64 832
  %3870 = load <8 x double>, ptr %3869, align 64, !tbaa !26
  %3871 = fdiv <8 x double> %3868, %3870
  %3872 = icmp eq <8 x i64> %3727, zeroinitializer
  %3873 = select <8 x i1> %3872, <8 x double> %3871, <8 x double> %3864
  br i1 %3729, label %3896, label %3874

3874:                                             ; preds = %3858
  %3875 = getelementptr inbounds nuw i8, ptr %3678, i64 7104
  %3876 = load <8 x double>, ptr %3875, align 64, !tbaa !26
  %3877 = fmul <8 x double> %3876, splat (double 2.000000e+00)
  %3878 = getelementptr inbounds nuw i8, ptr %3678, i64 384
  %3879 = load <8 x double>, ptr %3878, align 64, !tbaa !26
  %3880 = getelementptr inbounds nuw i8, ptr %3678, i64 448
  %3881 = load <8 x double>, ptr %3880, align 64, !tbaa !26
  %3882 = getelementptr inbounds nuw i8, ptr %3678, i64 512
  %3883 = load <8 x double>, ptr %3882, align 64, !tbaa !26
  %3884 = fmul <8 x double> %3685, %3883
  %3885 = fmul <8 x double> %3884, splat (double 0x3FD5555555555555)
  %3886 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3881, <8 x double> splat (double 5.000000e-01), <8 x double> %3885)
  %3887 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3685, <8 x double> %3886, <8 x double> %3879)
  %3888 = fmul <8 x double> %3685, %3887
  %3889 = getelementptr inbounds nuw i8, ptr %3678, i64 768
  %3890 = load <8 x double>, ptr %3889, align 64, !tbaa !26
  %3891 = fneg <8 x double> %3890
  %3892 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3891, <8 x double> %3685, <8 x double> %3888)
  %3893 = fmul <8 x double> %3877, %3892
  %3894 = fsub <8 x double> %3698, %3893
  %3895 = select <8 x i1> %3872, <8 x double> %3698, <8 x double> %3894
  br label %3896

3896:                                             ; preds = %3858, %3874
  %3897 = phi <8 x double> [ %3895, %3874 ], [ %3698, %3858 ]
  %3898 = getelementptr inbounds nuw i8, ptr %3678, i64 3264
  store <8 x double> %3713, ptr %3898, align 64, !tbaa !26
  store <8 x double> %3862, ptr %3865, align 64, !tbaa !26
  %3899 = getelementptr inbounds nuw i8, ptr %3678, i64 3136
  store <8 x double> %3859, ptr %3899, align 64, !tbaa !26
  %3900 = getelementptr inbounds nuw i8, ptr %3678, i64 3008
  %3901 = load <8 x double>, ptr %3900, align 64, !tbaa !26
  %3902 = select <8 x i1> %3872, <8 x double> %3901, <8 x double> %3861
  store <8 x double> %3902, ptr %3900, align 64, !tbaa !26
  %3903 = select <8 x i1> %3872, <8 x double> %3725, <8 x double> %3860
  store <8 x double> %3903, ptr %3724, align 64, !tbaa !26
  %3904 = getelementptr inbounds nuw i8, ptr %3678, i64 3520
  store <8 x double> %3682, ptr %3904, align 64, !tbaa !26
  %3905 = getelementptr inbounds nuw i8, ptr %3678, i64 3584
  store <8 x double> %3685, ptr %3905, align 64, !tbaa !26
  %3906 = getelementptr inbounds nuw i8, ptr %3678, i64 3200
  %3907 = load <8 x double>, ptr %3906, align 64, !tbaa !26
  %3908 = getelementptr inbounds nuw i8, ptr %3678, i64 5888
  %3909 = load <8 x double>, ptr %3908, align 64, !tbaa !26
  %3910 = fsub <8 x double> %3909, %3685
  %3911 = getelementptr inbounds nuw i8, ptr %3678, i64 8256
  %3912 = load <8 x double>, ptr %3911, align 64, !tbaa !26
  %3913 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3907, <8 x double> %3912, <8 x double> splat (double 1.000000e+00))
  %3914 = fdiv <8 x double> %3910, %3913
  %3915 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3685, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3916 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3685, <8 x double> %3915, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3917 = fneg <8 x double> %3680
  %3918 = fmul <8 x double> %3916, %3917
  %3919 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3907, <8 x double> %3914, <8 x double> %3918)
  %3920 = getelementptr inbounds nuw i8, ptr %3678, i64 3456
  store <8 x double> %3919, ptr %3920, align 64, !tbaa !26
  %3921 = getelementptr inbounds nuw i8, ptr %3678, i64 6784
  %3922 = load <8 x double>, ptr %3921, align 64, !tbaa !26
  %3923 = fsub <8 x double> %3909, %3922
  %3924 = fsub <8 x double> %3923, %3914
  %3925 = getelementptr inbounds nuw i8, ptr %3678, i64 3648
  store <8 x double> %3924, ptr %3925, align 64, !tbaa !26
  %3926 = getelementptr inbounds nuw i8, ptr %3678, i64 7360
  %3927 = load <8 x double>, ptr %3926, align 64, !tbaa !26
  %3928 = getelementptr inbounds nuw i8, ptr %3678, i64 7424
  %3929 = load <8 x double>, ptr %3928, align 64, !tbaa !26
  %3930 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3927, <8 x double> %3685, <8 x double> %3929)
  %3931 = getelementptr inbounds nuw i8, ptr %3678, i64 6720
  %3932 = load <8 x double>, ptr %3931, align 64, !tbaa !26
  %3933 = getelementptr inbounds nuw i8, ptr %3678, i64 4224
  %3934 = load <8 x double>, ptr %3933, align 64, !tbaa !26
  %3935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3703, <8 x double> %3934, <8 x double> %3932)
  %3936 = getelementptr inbounds nuw i8, ptr %3678, i64 5120
  %3937 = load <8 x double>, ptr %3936, align 64, !tbaa !26
  %3938 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3709, <8 x double> %3937, <8 x double> %3935)
  %3939 = fdiv <8 x double> %3938, %3712
  %3940 = getelementptr inbounds nuw i8, ptr %3678, i64 3328
  store <8 x double> %3939, ptr %3940, align 64, !tbaa !26
  %3941 = getelementptr inbounds nuw i8, ptr %3678, i64 4288
  %3942 = load <8 x double>, ptr %3941, align 64, !tbaa !26
  %3943 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3703, <8 x double> %3942, <8 x double> %3897)
  %3944 = getelementptr inbounds nuw i8, ptr %3678, i64 5184
  %3945 = load <8 x double>, ptr %3944, align 64, !tbaa !26
  %3946 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3709, <8 x double> %3945, <8 x double> %3943)
  %3947 = fdiv <8 x double> %3946, %3712
  %3948 = getelementptr inbounds nuw i8, ptr %3678, i64 3392
  store <8 x double> %3947, ptr %3948, align 64, !tbaa !26
  %3949 = getelementptr inbounds nuw i8, ptr %3678, i64 4608
  %3950 = load <8 x double>, ptr %3949, align 64, !tbaa !26
  %3951 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3703, <8 x double> %3950, <8 x double> %3930)
  %3952 = getelementptr inbounds nuw i8, ptr %3678, i64 5504
  %3953 = load <8 x double>, ptr %3952, align 64, !tbaa !26
  %3954 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3709, <8 x double> %3953, <8 x double> %3951)
  %3955 = fdiv <8 x double> %3954, %3712
  %3956 = getelementptr inbounds nuw i8, ptr %3678, i64 3712
  store <8 x double> %3955, ptr %3956, align 64, !tbaa !26
  %3957 = fcmp ogt <8 x double> %3676, %3873
  %3958 = select <8 x i1> %3957, <8 x double> %3676, <8 x double> %3873
  %3959 = add nuw nsw i64 %3675, 1
  %3960 = load i64, ptr %178, align 8, !tbaa !20
  %3961 = icmp slt i64 %3959, %3960
  br i1 %3961, label %3674, label %3962, !llvm.loop !136

3962:                                             ; preds = %3896, %3477
  %3963 = phi <8 x double> [ zeroinitializer, %3477 ], [ %3958, %3896 ]
  %3964 = phi i64 [ %3480, %3477 ], [ %3960, %3896 ]
  %3965 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %3966 = fadd <8 x double> %3965, splat (double 1.000000e+00)
  store <8 x double> %3966, ptr %195, align 64, !tbaa !26
  %3967 = icmp sgt i64 %3964, 0
  br i1 %3967, label %3968, label %3974

3968:                                             ; preds = %3962
  %3969 = load ptr, ptr %151, align 8, !tbaa !28
  %3970 = load i64, ptr %141, align 16, !tbaa !21
  %3971 = add nsw i64 %3970, -1
  br label %3996

3972:                                             ; preds = %4022
  %3973 = fcmp oeq <8 x double> %4037, zeroinitializer
  br label %3974

3974:                                             ; preds = %3972, %3962
  %3975 = phi <8 x i1> [ splat (i1 true), %3962 ], [ %3973, %3972 ]
  %3976 = load i64, ptr %230, align 32, !tbaa !24
  %3977 = sitofp i64 %3976 to double
  %3978 = insertelement <8 x double> poison, double %3977, i64 0
  %3979 = shufflevector <8 x double> %3978, <8 x double> poison, <8 x i32> zeroinitializer
  %3980 = fcmp oge <8 x double> %3966, %3979
  %3981 = and <8 x i1> %3975, %3980
  %3982 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %3983 = load <8 x double>, ptr %231, align 64, !tbaa !26
  %3984 = fcmp olt <8 x double> %3963, %3983
  %3985 = or <8 x i1> %3984, %3981
  %3986 = fcmp oge <8 x double> %3966, splat (double 2.000000e+01)
  %3987 = or <8 x i1> %3986, %3985
  %3988 = select <8 x i1> %3987, <8 x i64> %3982, <8 x i64> zeroinitializer
  store <8 x i64> %3988, ptr %155, align 64, !tbaa !26
  %3989 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3988)
  %3990 = icmp eq i64 %3989, 0
  br i1 %3990, label %549, label %3991, !llvm.loop !56

3991:                                             ; preds = %3974
  %3992 = load i64, ptr %178, align 8, !tbaa !20
  %3993 = icmp sgt i64 %3992, 0
  br i1 %3993, label %3994, label %4040

3994:                                             ; preds = %3991
  %3995 = icmp eq <8 x i64> %3988, zeroinitializer
  br label %4345

3996:                                             ; preds = %3968, %4022
  %3997 = phi i64 [ 0, %3968 ], [ %4038, %4022 ]
  %3998 = phi <8 x double> [ zeroinitializer, %3968 ], [ %4037, %4022 ]
  %3999 = getelementptr inbounds nuw %struct.Piece, ptr %3969, i64 %3997
  %4000 = getelementptr inbounds nuw i8, ptr %3999, i64 8512
  %4001 = load i64, ptr %4000, align 64, !tbaa !31
  %4002 = icmp sgt i64 %3970, %4001
  br i1 %4002, label %4011, label %4003

4003:                                             ; preds = %3996
  %4004 = getelementptr inbounds nuw i8, ptr %3999, i64 8608
  %4005 = load ptr, ptr %4004, align 32, !tbaa !74
  %4006 = getelementptr inbounds <8 x double>, ptr %4005, i64 %3971
  %4007 = load <8 x double>, ptr %4006, align 64, !tbaa !26
  %4008 = getelementptr inbounds nuw i8, ptr %3999, i64 1536
  %4009 = load <8 x double>, ptr %4008, align 64, !tbaa !26
  %4010 = fmul <8 x double> %4007, %4009
  br label %4022

4011:                                             ; preds = %3996
  %4012 = getelementptr inbounds nuw i8, ptr %3999, i64 3776
  %4013 = load <8 x double>, ptr %4012, align 64, !tbaa !26
  %4014 = getelementptr inbounds nuw i8, ptr %3999, i64 1536
  %4015 = load <8 x double>, ptr %4014, align 64, !tbaa !26
  %4016 = getelementptr inbounds nuw i8, ptr %3999, i64 8608
  %4017 = load ptr, ptr %4016, align 32, !tbaa !74
  %4018 = getelementptr inbounds <8 x double>, ptr %4017, i64 %3971
  %4019 = load <8 x double>, ptr %4018, align 64, !tbaa !26
  %4020 = fsub <8 x double> %4013, %4015
  %4021 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4019, <8 x double> %4020, <8 x double> %4015)
  br label %4022

4022:                                             ; preds = %4003, %4011
  %4023 = phi <8 x double> [ %4010, %4003 ], [ %4021, %4011 ]
  %4024 = getelementptr inbounds nuw i8, ptr %3999, i64 8320
  %4025 = load <8 x i64>, ptr %4024, align 64, !tbaa !26
  %4026 = getelementptr inbounds nuw i8, ptr %3999, i64 7680
  %4027 = load <8 x double>, ptr %4026, align 64, !tbaa !26
  %4028 = fcmp une <8 x double> %4027, zeroinitializer
  %4029 = getelementptr inbounds nuw i8, ptr %3999, i64 3008
  %4030 = load <8 x double>, ptr %4029, align 64, !tbaa !26
  %4031 = fcmp uge <8 x double> %4030, %4023
  %4032 = select <8 x i1> %4031, <8 x i1> splat (i1 true), <8 x i1> %4028
  %4033 = icmp eq <8 x i64> %4025, zeroinitializer
  %4034 = select <8 x i1> %4032, <8 x i1> splat (i1 true), <8 x i1> %4033
  %4035 = select <8 x i1> %4034, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4036 = fcmp ogt <8 x double> %3998, %4035
  %4037 = select <8 x i1> %4036, <8 x double> %3998, <8 x double> %4035
  %4038 = add nuw nsw i64 %3997, 1
  %4039 = icmp eq i64 %4038, %3964
  br i1 %4039, label %3972, label %3996, !llvm.loop !137

4040:                                             ; preds = %4393, %3991
  %4041 = phi i64 [ %3992, %3991 ], [ %4399, %4393 ]
  %4042 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4043 = fadd <8 x double> %4042, splat (double 1.000000e+00)
  %4044 = icmp eq <8 x i64> %3988, zeroinitializer
  %4045 = select <8 x i1> %4044, <8 x double> %4042, <8 x double> %4043
  store <8 x double> %4045, ptr %183, align 64, !tbaa !26
  %4046 = fcmp ogt <8 x double> %4045, splat (double 4.000000e+01)
  %4047 = select <8 x i1> %4046, <8 x i64> %3988, <8 x i64> zeroinitializer
  %4048 = xor <8 x i64> %4047, %3988
  %4049 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %4050 = fadd <8 x double> %4049, splat (double 1.000000e+00)
  %4051 = icmp eq <8 x i64> %4047, zeroinitializer
  %4052 = select <8 x i1> %4051, <8 x double> %4049, <8 x double> %4050
  store <8 x double> %4052, ptr %149, align 64, !tbaa !26
  %4053 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %4054 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %4055 = fsub <8 x double> %4053, %4054
  %4056 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4055)
  %4057 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4058 = fmul <8 x double> %4057, splat (double 1.500000e+00)
  %4059 = fcmp ogt <8 x double> %4056, %4058
  %4060 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4061 = fcmp ogt <8 x double> %4060, splat (double 2.000000e-03)
  %4062 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4063 = fcmp oeq <8 x double> %4062, zeroinitializer
  %4064 = and <8 x i1> %4059, %4063
  %4065 = and <8 x i1> %4061, %4064
  %4066 = fdiv <8 x double> %4057, %4056
  %4067 = select <8 x i1> %4065, <8 x i64> %4048, <8 x i64> zeroinitializer
  %4068 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4069 = fcmp ogt <8 x double> %4068, %4060
  %4070 = select <8 x i1> %4069, <8 x double> %4068, <8 x double> %4060
  %4071 = select <8 x i1> %4065, <8 x double> zeroinitializer, <8 x double> %4070
  %4072 = icmp eq <8 x i64> %4067, zeroinitializer
  %4073 = select <8 x i1> %4072, <8 x double> %4068, <8 x double> %4071
  store <8 x double> %4073, ptr %181, align 64, !tbaa !26
  %4074 = fcmp ogt <8 x double> %4066, splat (double 5.000000e-02)
  %4075 = select <8 x i1> %4074, <8 x double> %4066, <8 x double> splat (double 5.000000e-02)
  %4076 = fcmp olt <8 x double> %4075, splat (double 0x3FEE666666666666)
  %4077 = select <8 x i1> %4076, <8 x double> %4075, <8 x double> splat (double 0x3FEE666666666666)
  %4078 = fmul <8 x double> %4060, %4077
  %4079 = fcmp ogt <8 x double> %4078, splat (double 0x3EB0C6F7A0B5ED8D)
  %4080 = select <8 x i1> %4079, <8 x double> %4078, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4081 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4082 = select <8 x i1> %4072, <8 x double> %4081, <8 x double> %4080
  store <8 x double> %4082, ptr %161, align 64, !tbaa !26
  %4083 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4084 = fadd <8 x double> %4083, splat (double 1.000000e+00)
  %4085 = select <8 x i1> %4072, <8 x double> %4083, <8 x double> %4084
  store <8 x double> %4085, ptr %146, align 64, !tbaa !26
  %4086 = xor <8 x i64> %4067, %4048
  %4087 = icmp sgt i64 %4041, 0
  br i1 %4087, label %4088, label %4186

4088:                                             ; preds = %4040
  %4089 = load ptr, ptr %151, align 8, !tbaa !28
  %4090 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4091 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4092 = fcmp une <8 x double> %4090, %4091
  %4093 = fcmp ule <8 x double> %4090, zeroinitializer
  %4094 = or <8 x i1> %4093, %4092
  %4095 = fcmp ogt <8 x double> %4060, splat (double 0x3E7AD7F29ABCAF48)
  %4096 = fcmp ogt <8 x double> %4060, splat (double 1.000000e-05)
  %4097 = fcmp ogt <8 x double> %4060, splat (double 1.000000e-04)
  br label %4098

4098:                                             ; preds = %4088, %4098
  %4099 = phi i64 [ 0, %4088 ], [ %4182, %4098 ]
  %4100 = phi <8 x double> [ splat (double 1.000000e+00), %4088 ], [ %4181, %4098 ]
  %4101 = phi <8 x i64> [ zeroinitializer, %4088 ], [ %4129, %4098 ]
  %4102 = phi <8 x i64> [ zeroinitializer, %4088 ], [ %4178, %4098 ]
  %4103 = getelementptr inbounds nuw %struct.Piece, ptr %4089, i64 %4099
  %4104 = getelementptr inbounds nuw i8, ptr %4103, i64 3072
  %4105 = load <8 x double>, ptr %4104, align 64, !tbaa !26
  %4106 = getelementptr inbounds nuw i8, ptr %4103, i64 3968
  %4107 = load <8 x double>, ptr %4106, align 64, !tbaa !26
  %4108 = getelementptr inbounds nuw i8, ptr %4103, i64 8320
  %4109 = load <8 x i64>, ptr %4108, align 64, !tbaa !26
  %4110 = xor <8 x i64> %4109, splat (i64 -1)
  %4111 = getelementptr inbounds nuw i8, ptr %4103, i64 896
  %4112 = load <8 x double>, ptr %4111, align 64, !tbaa !26
  %4113 = fmul <8 x double> %4112, splat (double 3.000000e-03)
  %4114 = fcmp ogt <8 x double> %4113, splat (double 0x3E7AD7F29ABCAF48)
  %4115 = fneg <8 x double> %4113
  %4116 = select <8 x i1> %4114, <8 x double> %4115, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4117 = fcmp olt <8 x double> %4105, %4116
  %4118 = select <8 x i1> %4117, <8 x i1> %4094, <8 x i1> zeroinitializer
  %4119 = select <8 x i1> %4118, <8 x i64> %4110, <8 x i64> zeroinitializer
  %4120 = fcmp ole <8 x double> %4107, zeroinitializer
  %4121 = select <8 x i1> %4120, <8 x i64> %4119, <8 x i64> zeroinitializer
  %4122 = getelementptr inbounds nuw i8, ptr %4103, i64 832
  %4123 = load <8 x double>, ptr %4122, align 64, !tbaa !26
  %4124 = fmul <8 x double> %4123, splat (double -3.000000e-07)
  %4125 = fcmp olt <8 x double> %4105, %4124
  %4126 = select <8 x i1> %4095, <8 x i1> %4125, <8 x i1> zeroinitializer
  %4127 = select <8 x i1> %4126, <8 x i64> %4121, <8 x i64> zeroinitializer
  %4128 = or <8 x i64> %4127, %4102
  %4129 = or <8 x i64> %4127, %4101
  %4130 = fcmp olt <8 x double> %4100, splat (double 3.000000e-01)
  %4131 = icmp eq <8 x i64> %4127, zeroinitializer
  %4132 = select <8 x i1> %4131, <8 x i1> splat (i1 true), <8 x i1> %4130
  %4133 = select <8 x i1> %4132, <8 x double> %4100, <8 x double> splat (double 3.000000e-01)
  %4134 = xor <8 x i64> %4121, splat (i64 -1)
  %4135 = and <8 x i64> %4119, %4134
  %4136 = select <8 x i1> %4096, <8 x i64> %4135, <8 x i64> zeroinitializer
  %4137 = fsub <8 x double> %4107, %4105
  %4138 = fdiv <8 x double> %4107, %4137
  %4139 = or <8 x i64> %4128, %4136
  %4140 = fcmp olt <8 x double> %4133, %4138
  %4141 = icmp eq <8 x i64> %4136, zeroinitializer
  %4142 = select <8 x i1> %4141, <8 x i1> splat (i1 true), <8 x i1> %4140
  %4143 = select <8 x i1> %4142, <8 x double> %4133, <8 x double> %4138
  %4144 = getelementptr inbounds nuw i8, ptr %4103, i64 3904
  %4145 = load <8 x double>, ptr %4144, align 64, !tbaa !26
  %4146 = getelementptr inbounds nuw i8, ptr %4103, i64 3008
  %4147 = load <8 x double>, ptr %4146, align 64, !tbaa !26
  %4148 = getelementptr inbounds nuw i8, ptr %4103, i64 7680
  %4149 = load <8 x double>, ptr %4148, align 64, !tbaa !26
  %4150 = fcmp oeq <8 x double> %4149, zeroinitializer
  %4151 = getelementptr inbounds nuw i8, ptr %4103, i64 1472
  %4152 = load <8 x double>, ptr %4151, align 64, !tbaa !26
  %4153 = fmul <8 x double> %4152, splat (double 0x3FEFF7CED916872B)
  %4154 = fcmp olt <8 x double> %4147, %4153
  %4155 = and <8 x i1> %4150, %4154
  %4156 = and <8 x i1> %4097, %4155
  %4157 = fsub <8 x double> %4145, %4152
  %4158 = fsub <8 x double> %4145, %4147
  %4159 = fdiv <8 x double> %4157, %4158
  %4160 = fcmp uge <8 x double> %4143, %4159
  %4161 = select <8 x i1> %4156, <8 x i1> %4160, <8 x i1> zeroinitializer
  %4162 = select <8 x i1> %4161, <8 x double> %4159, <8 x double> %4143
  %4163 = fcmp oeq <8 x double> %4149, splat (double 1.000000e+00)
  %4164 = getelementptr inbounds nuw i8, ptr %4103, i64 3264
  %4165 = load <8 x double>, ptr %4164, align 64, !tbaa !26
  %4166 = getelementptr inbounds nuw i8, ptr %4103, i64 1600
  %4167 = load <8 x double>, ptr %4166, align 64, !tbaa !26
  %4168 = fmul <8 x double> %4167, splat (double 1.000100e+00)
  %4169 = fcmp ogt <8 x double> %4165, %4168
  %4170 = and <8 x i1> %4163, %4169
  %4171 = and <8 x i1> %4097, %4170
  %4172 = getelementptr inbounds nuw i8, ptr %4103, i64 4160
  %4173 = load <8 x double>, ptr %4172, align 64, !tbaa !26
  %4174 = fsub <8 x double> %4167, %4173
  %4175 = fsub <8 x double> %4165, %4173
  %4176 = fdiv <8 x double> %4174, %4175
  %4177 = select <8 x i1> %4170, <8 x i1> %4097, <8 x i1> %4156
  %4178 = select <8 x i1> %4177, <8 x i64> splat (i64 -1), <8 x i64> %4139
  %4179 = fcmp uge <8 x double> %4162, %4176
  %4180 = select <8 x i1> %4171, <8 x i1> %4179, <8 x i1> zeroinitializer
  %4181 = select <8 x i1> %4180, <8 x double> %4176, <8 x double> %4162
  %4182 = add nuw nsw i64 %4099, 1
  %4183 = icmp eq i64 %4182, %4041
  br i1 %4183, label %4184, label %4098, !llvm.loop !138

4184:                                             ; preds = %4098
  %4185 = icmp eq <8 x i64> %4129, zeroinitializer
  br label %4186

4186:                                             ; preds = %4184, %4040
  %4187 = phi <8 x i64> [ zeroinitializer, %4040 ], [ %4178, %4184 ]
  %4188 = phi <8 x i1> [ splat (i1 true), %4040 ], [ %4185, %4184 ]
  %4189 = phi <8 x double> [ splat (double 1.000000e+00), %4040 ], [ %4181, %4184 ]
  %4190 = and <8 x i64> %4187, %4086
  %4191 = fcmp ogt <8 x double> %4073, %4060
  %4192 = select <8 x i1> %4191, <8 x double> %4073, <8 x double> %4060
  %4193 = select <8 x i1> %4188, <8 x double> %4192, <8 x double> zeroinitializer
  %4194 = icmp eq <8 x i64> %4190, zeroinitializer
  %4195 = select <8 x i1> %4194, <8 x double> %4073, <8 x double> %4193
  %4196 = fcmp ogt <8 x double> %4189, splat (double 5.000000e-02)
  %4197 = select <8 x i1> %4196, <8 x double> %4189, <8 x double> splat (double 5.000000e-02)
  %4198 = fcmp olt <8 x double> %4197, splat (double 0x3FEE666666666666)
  %4199 = select <8 x i1> %4198, <8 x double> %4197, <8 x double> splat (double 0x3FEE666666666666)
  %4200 = fmul <8 x double> %4060, %4199
  %4201 = fcmp ogt <8 x double> %4200, splat (double 0x3EB0C6F7A0B5ED8D)
  %4202 = select <8 x i1> %4201, <8 x double> %4200, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4203 = select <8 x i1> %4194, <8 x double> %4082, <8 x double> %4202
  %4204 = fadd <8 x double> %4085, splat (double 1.000000e+00)
  %4205 = select <8 x i1> %4194, <8 x double> %4085, <8 x double> %4204
  %4206 = xor <8 x i64> %4190, %4086
  %4207 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4208 = fmul <8 x double> %4207, splat (double 5.000000e-01)
  %4209 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %4210 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %4211 = fneg <8 x double> %4208
  %4212 = icmp eq <8 x i64> %4210, zeroinitializer
  %4213 = select <8 x i1> %4212, <8 x double> %4211, <8 x double> %4208
  %4214 = fadd <8 x double> %4209, %4213
  %4215 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %4216 = fsub <8 x double> %4215, %4214
  %4217 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %4218 = fsub <8 x double> %4217, %4214
  %4219 = fneg <8 x double> %4216
  %4220 = select <8 x i1> %4212, <8 x double> %4219, <8 x double> %4216
  %4221 = fneg <8 x double> %4218
  %4222 = select <8 x i1> %4212, <8 x double> %4221, <8 x double> %4218
  %4223 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %4224 = fcmp oeq <8 x double> %4223, zeroinitializer
  %4225 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %4226 = fcmp oeq <8 x double> %4225, zeroinitializer
  %4227 = and <8 x i1> %4224, %4226
  %4228 = fcmp olt <8 x double> %4220, splat (double -4.000000e-03)
  %4229 = and <8 x i1> %4227, %4228
  %4230 = fcmp ogt <8 x double> %4222, splat (double 4.000000e-03)
  %4231 = and <8 x i1> %4230, %4229
  %4232 = and <8 x i1> %4061, %4231
  %4233 = fsub <8 x double> %4220, %4222
  %4234 = fdiv <8 x double> %4220, %4233
  %4235 = select <8 x i1> %4232, <8 x i64> %4206, <8 x i64> zeroinitializer
  %4236 = fcmp ogt <8 x double> %4195, %4060
  %4237 = icmp eq <8 x i64> %4235, zeroinitializer
  %4238 = select <8 x i1> %4237, <8 x i1> splat (i1 true), <8 x i1> %4236
  %4239 = select <8 x i1> %4238, <8 x double> %4195, <8 x double> %4060
  store <8 x double> %4239, ptr %181, align 64, !tbaa !26
  %4240 = fcmp ogt <8 x double> %4234, splat (double 5.000000e-02)
  %4241 = select <8 x i1> %4240, <8 x double> %4234, <8 x double> splat (double 5.000000e-02)
  %4242 = fcmp olt <8 x double> %4241, splat (double 0x3FEE666666666666)
  %4243 = select <8 x i1> %4242, <8 x double> %4241, <8 x double> splat (double 0x3FEE666666666666)
  %4244 = fmul <8 x double> %4060, %4243
  %4245 = fcmp ogt <8 x double> %4244, splat (double 0x3EB0C6F7A0B5ED8D)
  %4246 = select <8 x i1> %4245, <8 x double> %4244, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4247 = select <8 x i1> %4237, <8 x double> %4203, <8 x double> %4246
  store <8 x double> %4247, ptr %161, align 64, !tbaa !26
  %4248 = fadd <8 x double> %4205, splat (double 1.000000e+00)
  %4249 = select <8 x i1> %4237, <8 x double> %4205, <8 x double> %4248
  store <8 x double> %4249, ptr %146, align 64, !tbaa !26
  %4250 = xor <8 x i64> %4235, %4206
  %4251 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4252 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4253 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %4254 = fsub <8 x double> %4252, %4253
  %4255 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %4256 = fcmp une <8 x double> %4255, splat (double 1.000000e+00)
  %4257 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4258 = fsub <8 x double> %4215, %4257
  %4259 = select <8 x i1> %4256, <8 x double> splat (double -1.000000e+00), <8 x double> %4258
  %4260 = fcmp une <8 x double> %4255, splat (double 2.000000e+00)
  %4261 = fsub <8 x double> %4251, %4257
  %4262 = select <8 x i1> %4260, <8 x double> %4259, <8 x double> %4261
  %4263 = fcmp une <8 x double> %4255, splat (double 3.000000e+00)
  %4264 = fsub <8 x double> %4254, %4257
  %4265 = select <8 x i1> %4263, <8 x double> %4262, <8 x double> %4264
  %4266 = fcmp une <8 x double> %4255, splat (double 4.000000e+00)
  %4267 = fsub <8 x double> %4257, %4254
  %4268 = select <8 x i1> %4266, <8 x double> %4265, <8 x double> %4267
  br i1 %4087, label %4269, label %4301

4269:                                             ; preds = %4186
  %4270 = load ptr, ptr %151, align 8, !tbaa !28
  %4271 = and i64 %4041, 1
  %4272 = icmp eq i64 %4041, 1
  br i1 %4272, label %4291, label %4273

4273:                                             ; preds = %4269
  %4274 = and i64 %4041, 9223372036854775806
  br label %4275

4275:                                             ; preds = %4275, %4273
  %4276 = phi i64 [ 0, %4273 ], [ %4288, %4275 ]
  %4277 = phi <8 x double> [ splat (double 1.000000e+09), %4273 ], [ %4287, %4275 ]
  %4278 = phi i64 [ 0, %4273 ], [ %4289, %4275 ]
  %4279 = getelementptr inbounds nuw %struct.Piece, ptr %4270, i64 %4276, i32 35
  %4280 = load <8 x double>, ptr %4279, align 64, !tbaa !26
  %4281 = fcmp olt <8 x double> %4277, %4280
  %4282 = select <8 x i1> %4281, <8 x double> %4277, <8 x double> %4280
  %4283 = or disjoint i64 %4276, 1
  %4284 = getelementptr inbounds nuw %struct.Piece, ptr %4270, i64 %4283, i32 35
  %4285 = load <8 x double>, ptr %4284, align 64, !tbaa !26
  %4286 = fcmp olt <8 x double> %4282, %4285
  %4287 = select <8 x i1> %4286, <8 x double> %4282, <8 x double> %4285
  %4288 = add nuw nsw i64 %4276, 2
  %4289 = add i64 %4278, 2
  %4290 = icmp eq i64 %4289, %4274
  br i1 %4290, label %4291, label %4275, !llvm.loop !139

4291:                                             ; preds = %4275, %4269
  %4292 = phi <8 x double> [ poison, %4269 ], [ %4287, %4275 ]
  %4293 = phi i64 [ 0, %4269 ], [ %4288, %4275 ]
  %4294 = phi <8 x double> [ splat (double 1.000000e+09), %4269 ], [ %4287, %4275 ]
  %4295 = icmp eq i64 %4271, 0
  br i1 %4295, label %4301, label %4296

4296:                                             ; preds = %4291
  %4297 = getelementptr inbounds nuw %struct.Piece, ptr %4270, i64 %4293, i32 35
  %4298 = load <8 x double>, ptr %4297, align 64, !tbaa !26
  %4299 = fcmp olt <8 x double> %4294, %4298
  %4300 = select <8 x i1> %4299, <8 x double> %4294, <8 x double> %4298
  br label %4301

4301:                                             ; preds = %4296, %4291, %4186
  %4302 = phi <8 x double> [ splat (double 1.000000e+09), %4186 ], [ %4292, %4291 ], [ %4300, %4296 ]
  %4303 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %4304 = fsub <8 x double> %4303, %4253
  %4305 = fsub <8 x double> %4217, %4257
  %4306 = select <8 x i1> %4256, <8 x double> splat (double -1.000000e+00), <8 x double> %4305
  %4307 = fsub <8 x double> %4302, %4257
  %4308 = select <8 x i1> %4260, <8 x double> %4306, <8 x double> %4307
  %4309 = fsub <8 x double> %4304, %4257
  %4310 = select <8 x i1> %4263, <8 x double> %4308, <8 x double> %4309
  %4311 = fsub <8 x double> %4257, %4304
  %4312 = select <8 x i1> %4266, <8 x double> %4310, <8 x double> %4311
  %4313 = fcmp une <8 x double> %4255, zeroinitializer
  %4314 = fcmp oge <8 x double> %4060, splat (double 5.000000e-02)
  %4315 = and <8 x i1> %4314, %4313
  %4316 = fcmp olt <8 x double> %4268, zeroinitializer
  %4317 = and <8 x i1> %4315, %4316
  %4318 = fsub <8 x double> %4312, %4268
  %4319 = fmul <8 x double> %4318, splat (double 2.000000e-02)
  %4320 = fcmp ogt <8 x double> %4312, %4319
  %4321 = and <8 x i1> %4317, %4320
  %4322 = fsub <8 x double> %4268, %4312
  %4323 = fdiv <8 x double> %4268, %4322
  %4324 = fcmp olt <8 x double> %4323, splat (double 0x3FEE666666666666)
  %4325 = and <8 x i1> %4324, %4321
  %4326 = select <8 x i1> %4325, <8 x i64> %4250, <8 x i64> zeroinitializer
  %4327 = fcmp ogt <8 x double> %4239, %4060
  %4328 = icmp eq <8 x i64> %4326, zeroinitializer
  %4329 = select <8 x i1> %4328, <8 x i1> splat (i1 true), <8 x i1> %4327
  %4330 = select <8 x i1> %4329, <8 x double> %4239, <8 x double> %4060
  store <8 x double> %4330, ptr %181, align 64, !tbaa !26
  %4331 = fcmp ogt <8 x double> %4323, splat (double 5.000000e-02)
  %4332 = select <8 x i1> %4331, <8 x double> %4323, <8 x double> splat (double 5.000000e-02)
  %4333 = fcmp olt <8 x double> %4332, splat (double 0x3FEE666666666666)
  %4334 = select <8 x i1> %4333, <8 x double> %4332, <8 x double> splat (double 0x3FEE666666666666)
  %4335 = fmul <8 x double> %4060, %4334
  %4336 = fcmp ogt <8 x double> %4335, splat (double 0x3EB0C6F7A0B5ED8D)
  %4337 = select <8 x i1> %4336, <8 x double> %4335, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4338 = select <8 x i1> %4328, <8 x double> %4247, <8 x double> %4337
  store <8 x double> %4338, ptr %161, align 64, !tbaa !26
  %4339 = fadd <8 x double> %4249, splat (double 1.000000e+00)
  %4340 = select <8 x i1> %4328, <8 x double> %4249, <8 x double> %4339
  store <8 x double> %4340, ptr %146, align 64, !tbaa !26
  %4341 = xor <8 x i64> %4326, %4250
  %4342 = or <8 x i64> %4341, %4047
  %4343 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4342)
  %4344 = icmp eq i64 %4343, 0
  br i1 %4344, label %549, label %4401

4345:                                             ; preds = %3994, %4393
  %4346 = phi i64 [ 0, %3994 ], [ %4398, %4393 ]
  %4347 = load ptr, ptr %151, align 8, !tbaa !28
  %4348 = getelementptr inbounds nuw %struct.Piece, ptr %4347, i64 %4346
  %4349 = getelementptr inbounds nuw i8, ptr %4348, i64 8520
  %4350 = load ptr, ptr %4349, align 8, !tbaa !59
  %4351 = load <8 x double>, ptr %4350, align 64, !tbaa !26
  %4352 = getelementptr inbounds nuw i8, ptr %4348, i64 1344
  %4353 = load <8 x double>, ptr %4352, align 64, !tbaa !26
  %4354 = getelementptr inbounds nuw i8, ptr %4350, i64 64
  %4355 = load <8 x double>, ptr %4354, align 64, !tbaa !26
  %4356 = fsub <8 x double> %4355, %4351
  %4357 = fneg <8 x double> %4353
  %4358 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4357, <8 x double> %4356, <8 x double> %4351)
  %4359 = getelementptr inbounds nuw i8, ptr %4348, i64 8512
  %4360 = load i64, ptr %4359, align 64, !tbaa !31
  %4361 = icmp eq i64 %4360, 0
  br i1 %4361, label %4393, label %4362

4362:                                             ; preds = %4345
  %4363 = getelementptr <8 x double>, ptr %4350, i64 %4360
  %4364 = getelementptr i8, ptr %4363, i64 -64
  %4365 = load <8 x double>, ptr %4364, align 64, !tbaa !26
  %4366 = load <8 x double>, ptr %4363, align 64, !tbaa !26
  %4367 = getelementptr inbounds nuw i8, ptr %4348, i64 2880
  %4368 = load <8 x double>, ptr %4367, align 64, !tbaa !26
  %4369 = getelementptr inbounds nuw i8, ptr %4348, i64 2944
  %4370 = load <8 x double>, ptr %4369, align 64, !tbaa !26
  %4371 = getelementptr inbounds nuw i8, ptr %4348, i64 64
  %4372 = load <8 x double>, ptr %4371, align 64, !tbaa !26
  %4373 = fsub <8 x double> %4370, %4372
  %4374 = fmul <8 x double> %4368, %4373
  %4375 = getelementptr inbounds nuw i8, ptr %4348, i64 576
  %4376 = load <8 x double>, ptr %4375, align 64, !tbaa !26
  %4377 = getelementptr inbounds nuw i8, ptr %4348, i64 2816
  %4378 = load <8 x double>, ptr %4377, align 64, !tbaa !26
  %4379 = fdiv <8 x double> %4376, %4378
  %4380 = getelementptr inbounds nuw i8, ptr %4348, i64 192
  %4381 = load <8 x double>, ptr %4380, align 64, !tbaa !26
  %4382 = getelementptr inbounds nuw i8, ptr %4348, i64 256
  %4383 = load <8 x double>, ptr %4382, align 64, !tbaa !26
  %4384 = getelementptr inbounds nuw i8, ptr %4348, i64 320
  %4385 = load <8 x double>, ptr %4384, align 64, !tbaa !26
  %4386 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4366, <8 x double> %4385, <8 x double> %4383)
  %4387 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4366, <8 x double> %4386, <8 x double> %4381)
  %4388 = fdiv <8 x double> %4387, %4374
  %4389 = fmul <8 x double> %4366, %4388
  %4390 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4379, <8 x double> %4365, <8 x double> %4389)
  %4391 = fadd <8 x double> %4379, %4388
  %4392 = fdiv <8 x double> %4390, %4391
  br label %4393

4393:                                             ; preds = %4345, %4362
  %4394 = phi <8 x double> [ %4392, %4362 ], [ %4358, %4345 ]
  %4395 = getelementptr inbounds nuw i8, ptr %4348, i64 7616
  %4396 = load <8 x double>, ptr %4395, align 64, !tbaa !26
  %4397 = select <8 x i1> %3995, <8 x double> %4396, <8 x double> %4394
  store <8 x double> %4397, ptr %4395, align 64, !tbaa !26
  %4398 = add nuw nsw i64 %4346, 1
  %4399 = load i64, ptr %178, align 8, !tbaa !20
  %4400 = icmp slt i64 %4398, %4399
  br i1 %4400, label %4345, label %4040, !llvm.loop !140

4401:                                             ; preds = %4301
  %4402 = icmp eq <8 x i64> %4342, zeroinitializer
  %4403 = select <8 x i1> %4402, <8 x double> %4054, <8 x double> %4053
  store <8 x double> %4403, ptr %232, align 64, !tbaa !26
  %4404 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %4405 = select <8 x i1> %4402, <8 x double> %4404, <8 x double> %4215
  store <8 x double> %4405, ptr %172, align 64, !tbaa !26
  %4406 = select <8 x i1> %4402, <8 x double> %4215, <8 x double> %4217
  store <8 x double> %4406, ptr %166, align 64, !tbaa !26
  %4407 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %4408 = select <8 x i1> %4402, <8 x double> %4407, <8 x double> %4252
  store <8 x double> %4408, ptr %263, align 64, !tbaa !26
  %4409 = select <8 x i1> %4402, <8 x double> %4252, <8 x double> %4303
  store <8 x double> %4409, ptr %264, align 64, !tbaa !26
  %4410 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %4411 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %4412 = select <8 x i1> %4402, <8 x double> %4411, <8 x double> %4410
  store <8 x double> %4412, ptr %265, align 64, !tbaa !26
  %4413 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %4414 = select <8 x i1> %4402, <8 x double> %4410, <8 x double> %4413
  store <8 x double> %4414, ptr %266, align 64, !tbaa !26
  %4415 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %4416 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %4417 = select <8 x i1> %4402, <8 x double> %4416, <8 x double> %4415
  store <8 x double> %4417, ptr %268, align 64, !tbaa !26
  %4418 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %4419 = select <8 x i1> %4402, <8 x double> %4415, <8 x double> %4418
  store <8 x double> %4419, ptr %269, align 64, !tbaa !26
  %4420 = load <8 x double>, ptr %272, align 64, !tbaa !26
  %4421 = load <8 x double>, ptr %271, align 64, !tbaa !26
  %4422 = select <8 x i1> %4402, <8 x double> %4421, <8 x double> %4420
  store <8 x double> %4422, ptr %271, align 64, !tbaa !26
  %4423 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %4424 = select <8 x i1> %4402, <8 x double> %4420, <8 x double> %4423
  store <8 x double> %4424, ptr %272, align 64, !tbaa !26
  %4425 = load <8 x double>, ptr %275, align 64, !tbaa !26
  %4426 = load <8 x double>, ptr %274, align 64, !tbaa !26
  %4427 = select <8 x i1> %4402, <8 x double> %4426, <8 x double> %4425
  store <8 x double> %4427, ptr %274, align 64, !tbaa !26
  %4428 = load <8 x double>, ptr %276, align 64, !tbaa !26
  %4429 = select <8 x i1> %4402, <8 x double> %4425, <8 x double> %4428
  store <8 x double> %4429, ptr %275, align 64, !tbaa !26
  %4430 = xor <8 x i64> %4342, splat (i64 -1)
  br i1 %4087, label %4431, label %4825

4431:                                             ; preds = %4401, %4790
  %4432 = phi i64 [ %4802, %4790 ], [ 0, %4401 ]
  %4433 = load ptr, ptr %151, align 8, !tbaa !28
  %4434 = getelementptr inbounds nuw %struct.Piece, ptr %4433, i64 %4432
  %4435 = getelementptr inbounds nuw i8, ptr %4434, i64 1664
  %4436 = load <8 x double>, ptr %4435, align 64, !tbaa !26
  %4437 = fcmp ogt <8 x double> %4436, zeroinitializer
  %4438 = bitcast <8 x i1> %4437 to i8
  %4439 = icmp eq i8 %4438, 0
  br i1 %4439, label %4697, label %4440

4440:                                             ; preds = %4431
  %4441 = load i64, ptr %141, align 16, !tbaa !21
  %4442 = add i64 %4441, -1
  %4443 = getelementptr inbounds nuw i8, ptr %4434, i64 4672
  %4444 = load <8 x double>, ptr %4443, align 64, !tbaa !26
  %4445 = getelementptr inbounds nuw i8, ptr %4434, i64 3776
  %4446 = load <8 x double>, ptr %4445, align 64, !tbaa !26
  %4447 = getelementptr inbounds nuw i8, ptr %4434, i64 8512
  %4448 = load i64, ptr %4447, align 64, !tbaa !31
  %4449 = icmp sgt i64 %4441, %4448
  br i1 %4449, label %4458, label %4450

4450:                                             ; preds = %4440
  %4451 = getelementptr inbounds nuw i8, ptr %4434, i64 8608
  %4452 = load ptr, ptr %4451, align 32, !tbaa !74
  %4453 = getelementptr inbounds <8 x double>, ptr %4452, i64 %4442
  %4454 = load <8 x double>, ptr %4453, align 64, !tbaa !26
  %4455 = getelementptr inbounds nuw i8, ptr %4434, i64 1536
  %4456 = load <8 x double>, ptr %4455, align 64, !tbaa !26
  %4457 = fmul <8 x double> %4454, %4456
  br label %4467

4458:                                             ; preds = %4440
  %4459 = getelementptr inbounds nuw i8, ptr %4434, i64 1536
  %4460 = load <8 x double>, ptr %4459, align 64, !tbaa !26
  %4461 = getelementptr inbounds nuw i8, ptr %4434, i64 8608
  %4462 = load ptr, ptr %4461, align 32, !tbaa !74
  %4463 = getelementptr inbounds <8 x double>, ptr %4462, i64 %4442
  %4464 = load <8 x double>, ptr %4463, align 64, !tbaa !26
  %4465 = fsub <8 x double> %4444, %4460
  %4466 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4464, <8 x double> %4465, <8 x double> %4460)
  br label %4467

4467:                                             ; preds = %4458, %4450
  %4468 = phi <8 x double> [ %4456, %4450 ], [ %4460, %4458 ]
  %4469 = phi <8 x double> [ %4457, %4450 ], [ %4466, %4458 ]
  %4470 = getelementptr inbounds nuw i8, ptr %4434, i64 3008
  %4471 = load <8 x double>, ptr %4470, align 64, !tbaa !26
  %4472 = fcmp ole <8 x double> %4469, %4471
  %4473 = getelementptr inbounds nuw i8, ptr %4434, i64 7680
  %4474 = load <8 x double>, ptr %4473, align 64, !tbaa !26
  %4475 = fcmp oeq <8 x double> %4474, zeroinitializer
  %4476 = select <8 x i1> %4475, <8 x i1> %4472, <8 x i1> zeroinitializer
  %4477 = select <8 x i1> %4476, <8 x i64> %4342, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %4478 = xor <8 x i64> %4477, %4342
  store <8 x i64> %4478, ptr %12, align 64, !tbaa !26
  %4479 = fsub <8 x double> %4444, %4446
  %4480 = getelementptr inbounds nuw i8, ptr %4434, i64 1536
  %4481 = fsub <8 x double> %4446, %4468
  %4482 = fdiv <8 x double> %4479, %4481
  %4483 = getelementptr inbounds nuw i8, ptr %4434, i64 8552
  %4484 = load ptr, ptr %4483, align 8, !tbaa !69
  %4485 = getelementptr inbounds <8 x double>, ptr %4484, i64 %4448
  %4486 = load <8 x double>, ptr %4485, align 64, !tbaa !26
  %4487 = getelementptr inbounds nuw i8, ptr %4434, i64 8560
  %4488 = load ptr, ptr %4487, align 16, !tbaa !49
  %4489 = getelementptr inbounds <8 x double>, ptr %4488, i64 %4448
  %4490 = load <8 x double>, ptr %4489, align 64, !tbaa !26
  %4491 = icmp eq <8 x i64> %4477, zeroinitializer
  %4492 = select <8 x i1> %4491, <8 x double> %4490, <8 x double> %4486
  store <8 x double> %4492, ptr %4489, align 64, !tbaa !26
  %4493 = load i64, ptr %4447, align 64, !tbaa !31
  %4494 = add nsw i64 %4493, 1
  %4495 = icmp slt i64 %4494, %4442
  br i1 %4495, label %4496, label %4500

4496:                                             ; preds = %4467
  %4497 = getelementptr inbounds nuw i8, ptr %4434, i64 8624
  br label %4540

4498:                                             ; preds = %4540
  %4499 = load i64, ptr %4447, align 64, !tbaa !31
  br label %4500

4500:                                             ; preds = %4498, %4467
  %4501 = phi i64 [ %4493, %4467 ], [ %4499, %4498 ]
  %4502 = phi <8 x double> [ %4486, %4467 ], [ %4545, %4498 ]
  %4503 = icmp sgt i64 %4441, %4501
  br i1 %4503, label %4511, label %4504

4504:                                             ; preds = %4500
  %4505 = getelementptr inbounds nuw i8, ptr %4434, i64 8608
  %4506 = load ptr, ptr %4505, align 32, !tbaa !74
  %4507 = getelementptr inbounds <8 x double>, ptr %4506, i64 %4442
  %4508 = load <8 x double>, ptr %4507, align 64, !tbaa !26
  %4509 = load <8 x double>, ptr %4480, align 64, !tbaa !26
  %4510 = fmul <8 x double> %4508, %4509
  br label %4519

4511:                                             ; preds = %4500
  %4512 = load <8 x double>, ptr %4480, align 64, !tbaa !26
  %4513 = getelementptr inbounds nuw i8, ptr %4434, i64 8608
  %4514 = load ptr, ptr %4513, align 32, !tbaa !74
  %4515 = getelementptr inbounds <8 x double>, ptr %4514, i64 %4442
  %4516 = load <8 x double>, ptr %4515, align 64, !tbaa !26
  %4517 = fsub <8 x double> %4446, %4512
  %4518 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4516, <8 x double> %4517, <8 x double> %4512)
  br label %4519

4519:                                             ; preds = %4511, %4504
  %4520 = phi <8 x double> [ %4510, %4504 ], [ %4518, %4511 ]
  %4521 = load ptr, ptr %4483, align 8, !tbaa !69
  %4522 = getelementptr inbounds <8 x double>, ptr %4521, i64 %4442
  %4523 = load <8 x double>, ptr %4522, align 64, !tbaa !26
  %4524 = load ptr, ptr %4487, align 16, !tbaa !49
  %4525 = getelementptr inbounds <8 x double>, ptr %4524, i64 %4442
  %4526 = fsub <8 x double> %4502, %4523
  %4527 = fsub <8 x double> %4469, %4520
  %4528 = load <8 x double>, ptr %4470, align 64, !tbaa !26
  %4529 = fsub <8 x double> %4528, %4520
  %4530 = fdiv <8 x double> %4527, %4529
  %4531 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4526, <8 x double> %4530, <8 x double> %4523)
  %4532 = load <8 x double>, ptr %4525, align 64, !tbaa !26
  %4533 = select <8 x i1> %4491, <8 x double> %4532, <8 x double> %4531
  store <8 x double> %4533, ptr %4525, align 64, !tbaa !26
  %4534 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4478)
  %4535 = icmp eq i64 %4534, 0
  br i1 %4535, label %4696, label %4536

4536:                                             ; preds = %4519
  %4537 = getelementptr inbounds nuw i8, ptr %4434, i64 8608
  %4538 = getelementptr inbounds nuw i8, ptr %4434, i64 3136
  %4539 = getelementptr inbounds nuw i8, ptr %4434, i64 832
  br label %4558

4540:                                             ; preds = %4496, %4540
  %4541 = phi i64 [ %4494, %4496 ], [ %4556, %4540 ]
  %4542 = phi <8 x double> [ %4486, %4496 ], [ %4545, %4540 ]
  %4543 = load ptr, ptr %4483, align 8, !tbaa !69
  %4544 = getelementptr inbounds <8 x double>, ptr %4543, i64 %4541
  %4545 = load <8 x double>, ptr %4544, align 64, !tbaa !26
  %4546 = load ptr, ptr %4487, align 16, !tbaa !49
  %4547 = getelementptr inbounds <8 x double>, ptr %4546, i64 %4541
  %4548 = fsub <8 x double> %4542, %4545
  %4549 = load ptr, ptr %4497, align 16, !tbaa !141
  %4550 = getelementptr inbounds <8 x double>, ptr %4549, i64 %4541
  %4551 = load <8 x double>, ptr %4550, align 64, !tbaa !26
  %4552 = fmul <8 x double> %4482, %4551
  %4553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4548, <8 x double> %4552, <8 x double> %4545)
  %4554 = load <8 x double>, ptr %4547, align 64, !tbaa !26
  %4555 = select <8 x i1> %4491, <8 x double> %4554, <8 x double> %4553
  store <8 x double> %4555, ptr %4547, align 64, !tbaa !26
  %4556 = add nsw i64 %4541, 1
  %4557 = icmp eq i64 %4556, %4442
  br i1 %4557, label %4498, label %4540, !llvm.loop !142

4558:                                             ; preds = %4536, %4693
  %4559 = phi i64 [ 0, %4536 ], [ %4694, %4693 ]
  %4560 = getelementptr inbounds nuw i64, ptr %12, i64 %4559
  %4561 = load i64, ptr %4560, align 8, !tbaa !30
  %4562 = icmp eq i64 %4561, 0
  br i1 %4562, label %4693, label %4563

4563:                                             ; preds = %4558
  %4564 = load i64, ptr %141, align 16, !tbaa !21
  %4565 = load i64, ptr %4447, align 64, !tbaa !31
  %4566 = getelementptr inbounds nuw double, ptr %4480, i64 %4559
  %4567 = load double, ptr %4566, align 8, !tbaa !44
  %4568 = getelementptr inbounds nuw double, ptr %4470, i64 %4559
  %4569 = load double, ptr %4568, align 8, !tbaa !44
  %4570 = add nsw i64 %4564, -1
  %4571 = icmp sgt i64 %4564, %4565
  br i1 %4571, label %4572, label %4693

4572:                                             ; preds = %4563
  %4573 = getelementptr inbounds nuw double, ptr %4445, i64 %4559
  %4574 = load double, ptr %4573, align 8, !tbaa !44
  %4575 = getelementptr inbounds nuw double, ptr %4443, i64 %4559
  %4576 = load double, ptr %4575, align 8, !tbaa !44
  %4577 = load ptr, ptr %4537, align 32
  %4578 = getelementptr i8, ptr %4577, i64 64
  %4579 = getelementptr double, ptr %4578, i64 %4559
  %4580 = fsub double %4574, %4567
  %4581 = getelementptr double, ptr %4577, i64 %4559
  %4582 = fsub double %4576, %4567
  %4583 = load ptr, ptr %4483, align 8, !tbaa !69
  %4584 = getelementptr double, ptr %4583, i64 %4559
  %4585 = load ptr, ptr %4487, align 16, !tbaa !49
  %4586 = getelementptr double, ptr %4585, i64 %4559
  %4587 = getelementptr <8 x double>, ptr %4581, i64 %4570
  br label %4615

4588:                                             ; preds = %4661
  %4589 = getelementptr inbounds nuw double, ptr %4473, i64 %4559
  %4590 = load double, ptr %4589, align 8, !tbaa !44
  %4591 = fcmp ogt double %4590, 0.000000e+00
  %4592 = fcmp ogt double %4672, 0.000000e+00
  %4593 = select i1 %4591, i1 %4592, i1 false
  br i1 %4593, label %4594, label %4693

4594:                                             ; preds = %4588
  %4595 = getelementptr inbounds nuw double, ptr %4538, i64 %4559
  %4596 = getelementptr inbounds nuw double, ptr %4539, i64 %4559
  %4597 = sub i64 %4564, %4565
  %4598 = add i64 %4565, 1
  %4599 = and i64 %4597, 1
  %4600 = icmp eq i64 %4599, 0
  br i1 %4600, label %4610, label %4601

4601:                                             ; preds = %4594
  %4602 = load double, ptr %4595, align 8, !tbaa !44
  %4603 = load double, ptr %4596, align 8, !tbaa !44
  %4604 = fmul double %4672, %4603
  %4605 = fdiv double %4602, %4604
  %4606 = getelementptr <8 x double>, ptr %4586, i64 %4565
  %4607 = load double, ptr %4606, align 8, !tbaa !44
  %4608 = fmul double %4607, %4605
  store double %4608, ptr %4606, align 8, !tbaa !44
  %4609 = add nsw i64 %4565, 1
  br label %4610

4610:                                             ; preds = %4601, %4594
  %4611 = phi i64 [ %4565, %4594 ], [ %4609, %4601 ]
  %4612 = icmp eq i64 %4564, %4598
  br i1 %4612, label %4693, label %4613

4613:                                             ; preds = %4610
  %4614 = getelementptr i8, ptr %4586, i64 64
  br label %4675

4615:                                             ; preds = %4661, %4572
  %4616 = phi double [ 0.000000e+00, %4572 ], [ %4672, %4661 ]
  %4617 = phi i64 [ %4570, %4572 ], [ %4673, %4661 ]
  %4618 = icmp eq i64 %4617, %4570
  br i1 %4618, label %4619, label %4622

4619:                                             ; preds = %4615
  %4620 = load double, ptr %4587, align 8, !tbaa !44
  %4621 = tail call noundef double @llvm.fmuladd.f64(double %4620, double %4580, double %4567)
  br label %4633

4622:                                             ; preds = %4615
  %4623 = getelementptr <8 x double>, ptr %4579, i64 %4617
  %4624 = load double, ptr %4623, align 8, !tbaa !44
  %4625 = tail call noundef double @llvm.fmuladd.f64(double %4624, double %4580, double %4567)
  %4626 = getelementptr <8 x double>, ptr %4581, i64 %4617
  %4627 = load double, ptr %4626, align 8, !tbaa !44
  %4628 = tail call noundef double @llvm.fmuladd.f64(double %4627, double %4580, double %4567)
  %4629 = tail call noundef double @llvm.fmuladd.f64(double %4624, double %4582, double %4567)
  %4630 = fcmp ult double %4629, %4625
  br i1 %4630, label %4631, label %4633

4631:                                             ; preds = %4622
  %4632 = add nsw i64 %4617, 1
  br label %4633

4633:                                             ; preds = %4631, %4622, %4619
  %4634 = phi double [ %4628, %4631 ], [ %4628, %4622 ], [ %4621, %4619 ]
  %4635 = phi double [ %4625, %4631 ], [ %4625, %4622 ], [ %4569, %4619 ]
  %4636 = phi i64 [ %4632, %4631 ], [ %4617, %4622 ], [ %4570, %4619 ]
  %4637 = icmp sgt i64 %4636, %4565
  br i1 %4637, label %4638, label %4661

4638:                                             ; preds = %4633
  %4639 = load ptr, ptr %4483, align 8
  %4640 = getelementptr double, ptr %4639, i64 %4559
  br label %4641

4641:                                             ; preds = %4656, %4638
  %4642 = phi i64 [ %4636, %4638 ], [ %4659, %4656 ]
  %4643 = phi double [ 0.000000e+00, %4638 ], [ %4658, %4656 ]
  %4644 = phi double [ %4635, %4638 ], [ %4657, %4656 ]
  %4645 = getelementptr <8 x double>, ptr %4581, i64 %4642
  %4646 = load double, ptr %4645, align 8, !tbaa !44
  %4647 = tail call noundef double @llvm.fmuladd.f64(double %4646, double %4582, double %4567)
  %4648 = fcmp ogt double %4647, %4634
  br i1 %4648, label %4649, label %4661

4649:                                             ; preds = %4641
  %4650 = fcmp ogt double %4644, %4647
  br i1 %4650, label %4651, label %4656

4651:                                             ; preds = %4649
  %4652 = getelementptr <8 x double>, ptr %4640, i64 %4642
  %4653 = load double, ptr %4652, align 8, !tbaa !44
  %4654 = fsub double %4644, %4647
  %4655 = tail call double @llvm.fmuladd.f64(double %4653, double %4654, double %4643)
  br label %4656

4656:                                             ; preds = %4651, %4649
  %4657 = phi double [ %4647, %4651 ], [ %4644, %4649 ]
  %4658 = phi double [ %4655, %4651 ], [ %4643, %4649 ]
  %4659 = add nsw i64 %4642, -1
  %4660 = icmp sgt i64 %4659, %4565
  br i1 %4660, label %4641, label %4661, !llvm.loop !143

4661:                                             ; preds = %4656, %4641, %4633
  %4662 = phi double [ %4635, %4633 ], [ %4644, %4641 ], [ %4657, %4656 ]
  %4663 = phi double [ 0.000000e+00, %4633 ], [ %4643, %4641 ], [ %4658, %4656 ]
  %4664 = phi i64 [ %4636, %4633 ], [ %4642, %4641 ], [ %4565, %4656 ]
  %4665 = getelementptr <8 x double>, ptr %4584, i64 %4664
  %4666 = load double, ptr %4665, align 8, !tbaa !44
  %4667 = fsub double %4662, %4634
  %4668 = tail call double @llvm.fmuladd.f64(double %4666, double %4667, double %4663)
  %4669 = fsub double %4635, %4634
  %4670 = fdiv double %4668, %4669
  %4671 = getelementptr <8 x double>, ptr %4586, i64 %4617
  store double %4670, ptr %4671, align 8, !tbaa !44
  %4672 = fadd double %4616, %4668
  %4673 = add nsw i64 %4617, -1
  %4674 = icmp sgt i64 %4617, %4565
  br i1 %4674, label %4615, label %4588, !llvm.loop !144

4675:                                             ; preds = %4675, %4613
  %4676 = phi i64 [ %4611, %4613 ], [ %4691, %4675 ]
  %4677 = load double, ptr %4595, align 8, !tbaa !44
  %4678 = load double, ptr %4596, align 8, !tbaa !44
  %4679 = fmul double %4672, %4678
  %4680 = fdiv double %4677, %4679
  %4681 = getelementptr <8 x double>, ptr %4586, i64 %4676
  %4682 = load double, ptr %4681, align 8, !tbaa !44
  %4683 = fmul double %4682, %4680
  store double %4683, ptr %4681, align 8, !tbaa !44
  %4684 = load double, ptr %4595, align 8, !tbaa !44
  %4685 = load double, ptr %4596, align 8, !tbaa !44
  %4686 = fmul double %4672, %4685
  %4687 = fdiv double %4684, %4686
  %4688 = getelementptr <8 x double>, ptr %4614, i64 %4676
  %4689 = load double, ptr %4688, align 8, !tbaa !44
  %4690 = fmul double %4689, %4687
  store double %4690, ptr %4688, align 8, !tbaa !44
  %4691 = add nsw i64 %4676, 2
  %4692 = icmp eq i64 %4691, %4564
  br i1 %4692, label %4693, label %4675, !llvm.loop !145

4693:                                             ; preds = %4610, %4675, %4588, %4563, %4558
  %4694 = add nuw nsw i64 %4559, 1
  %4695 = icmp eq i64 %4694, 8
  br i1 %4695, label %4696, label %4558, !llvm.loop !146

4696:                                             ; preds = %4693, %4519
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  br label %4697

4697:                                             ; preds = %4431, %4696
  %4698 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %4699 = and <8 x i64> %4698, %4430
  %4700 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4699)
  %4701 = icmp eq i64 %4700, 0
  %4702 = getelementptr inbounds nuw i8, ptr %4434, i64 8520
  br i1 %4701, label %4703, label %4721

4703:                                             ; preds = %4697
  %4704 = getelementptr inbounds nuw i8, ptr %4434, i64 8528
  %4705 = getelementptr inbounds nuw i8, ptr %4434, i64 8536
  %4706 = load ptr, ptr %4705, align 8, !tbaa !35
  %4707 = load ptr, ptr %4704, align 8, !tbaa !35
  store ptr %4707, ptr %4705, align 8, !tbaa !35
  %4708 = load ptr, ptr %4702, align 8, !tbaa !35
  store ptr %4708, ptr %4704, align 8, !tbaa !35
  store ptr %4706, ptr %4702, align 8, !tbaa !35
  %4709 = getelementptr inbounds nuw i8, ptr %4434, i64 8640
  %4710 = getelementptr inbounds nuw i8, ptr %4434, i64 8648
  %4711 = getelementptr inbounds nuw i8, ptr %4434, i64 8656
  %4712 = load ptr, ptr %4711, align 8, !tbaa !35
  %4713 = load ptr, ptr %4710, align 8, !tbaa !35
  store ptr %4713, ptr %4711, align 8, !tbaa !35
  %4714 = load ptr, ptr %4709, align 8, !tbaa !35
  store ptr %4714, ptr %4710, align 8, !tbaa !35
  store ptr %4712, ptr %4709, align 8, !tbaa !35
  %4715 = getelementptr inbounds nuw i8, ptr %4434, i64 8688
  %4716 = getelementptr inbounds nuw i8, ptr %4434, i64 8696
  %4717 = getelementptr inbounds nuw i8, ptr %4434, i64 8704
  %4718 = load ptr, ptr %4717, align 8, !tbaa !35
  %4719 = load ptr, ptr %4716, align 8, !tbaa !35
  store ptr %4719, ptr %4717, align 8, !tbaa !35
  %4720 = load ptr, ptr %4715, align 8, !tbaa !35
  store ptr %4720, ptr %4716, align 8, !tbaa !35
  store ptr %4718, ptr %4715, align 8, !tbaa !35
  br label %4786

4721:                                             ; preds = %4697
  %4722 = load ptr, ptr %4702, align 8, !tbaa !59
  %4723 = getelementptr inbounds nuw i8, ptr %4434, i64 8528
  %4724 = load ptr, ptr %4723, align 16, !tbaa !48
  %4725 = getelementptr inbounds nuw i8, ptr %4434, i64 8536
  %4726 = load ptr, ptr %4725, align 8, !tbaa !58
  %4727 = load i64, ptr %141, align 16, !tbaa !21
  %4728 = icmp sgt i64 %4727, 0
  br i1 %4728, label %4729, label %4742

4729:                                             ; preds = %4721, %4729
  %4730 = phi i64 [ %4740, %4729 ], [ 0, %4721 ]
  %4731 = getelementptr inbounds nuw <8 x double>, ptr %4726, i64 %4730
  %4732 = getelementptr inbounds nuw <8 x double>, ptr %4724, i64 %4730
  %4733 = load <8 x double>, ptr %4732, align 64, !tbaa !26
  %4734 = load <8 x double>, ptr %4731, align 64, !tbaa !26
  %4735 = select <8 x i1> %4402, <8 x double> %4734, <8 x double> %4733
  store <8 x double> %4735, ptr %4731, align 64, !tbaa !26
  %4736 = getelementptr inbounds nuw <8 x double>, ptr %4722, i64 %4730
  %4737 = load <8 x double>, ptr %4736, align 64, !tbaa !26
  %4738 = load <8 x double>, ptr %4732, align 64, !tbaa !26
  %4739 = select <8 x i1> %4402, <8 x double> %4738, <8 x double> %4737
  store <8 x double> %4739, ptr %4732, align 64, !tbaa !26
  %4740 = add nuw nsw i64 %4730, 1
  %4741 = icmp eq i64 %4740, %4727
  br i1 %4741, label %4742, label %4729, !llvm.loop !147

4742:                                             ; preds = %4729, %4721
  %4743 = getelementptr inbounds nuw i8, ptr %4434, i64 8640
  %4744 = load ptr, ptr %4743, align 64, !tbaa !129
  %4745 = getelementptr inbounds nuw i8, ptr %4434, i64 8648
  %4746 = load ptr, ptr %4745, align 8, !tbaa !52
  %4747 = getelementptr inbounds nuw i8, ptr %4434, i64 8656
  %4748 = load ptr, ptr %4747, align 16, !tbaa !63
  %4749 = load i64, ptr %142, align 8, !tbaa !22
  %4750 = icmp sgt i64 %4749, 0
  br i1 %4750, label %4751, label %4786

4751:                                             ; preds = %4742, %4751
  %4752 = phi i64 [ %4762, %4751 ], [ 0, %4742 ]
  %4753 = getelementptr inbounds nuw <8 x double>, ptr %4748, i64 %4752
  %4754 = getelementptr inbounds nuw <8 x double>, ptr %4746, i64 %4752
  %4755 = load <8 x double>, ptr %4754, align 64, !tbaa !26
  %4756 = load <8 x double>, ptr %4753, align 64, !tbaa !26
  %4757 = select <8 x i1> %4402, <8 x double> %4756, <8 x double> %4755
  store <8 x double> %4757, ptr %4753, align 64, !tbaa !26
  %4758 = getelementptr inbounds nuw <8 x double>, ptr %4744, i64 %4752
  %4759 = load <8 x double>, ptr %4758, align 64, !tbaa !26
  %4760 = load <8 x double>, ptr %4754, align 64, !tbaa !26
  %4761 = select <8 x i1> %4402, <8 x double> %4760, <8 x double> %4759
  store <8 x double> %4761, ptr %4754, align 64, !tbaa !26
  %4762 = add nuw nsw i64 %4752, 1
  %4763 = icmp eq i64 %4762, %4749
  br i1 %4763, label %4764, label %4751, !llvm.loop !147

4764:                                             ; preds = %4751
  %4765 = load i64, ptr %142, align 8, !tbaa !22
  %4766 = getelementptr inbounds nuw i8, ptr %4434, i64 8688
  %4767 = load ptr, ptr %4766, align 16, !tbaa !92
  %4768 = getelementptr inbounds nuw i8, ptr %4434, i64 8696
  %4769 = load ptr, ptr %4768, align 8, !tbaa !51
  %4770 = getelementptr inbounds nuw i8, ptr %4434, i64 8704
  %4771 = load ptr, ptr %4770, align 64, !tbaa !61
  %4772 = icmp sgt i64 %4765, 0
  br i1 %4772, label %4773, label %4786

4773:                                             ; preds = %4764, %4773
  %4774 = phi i64 [ %4784, %4773 ], [ 0, %4764 ]
  %4775 = getelementptr inbounds nuw <8 x double>, ptr %4771, i64 %4774
  %4776 = getelementptr inbounds nuw <8 x double>, ptr %4769, i64 %4774
  %4777 = load <8 x double>, ptr %4776, align 64, !tbaa !26
  %4778 = load <8 x double>, ptr %4775, align 64, !tbaa !26
  %4779 = select <8 x i1> %4402, <8 x double> %4778, <8 x double> %4777
  store <8 x double> %4779, ptr %4775, align 64, !tbaa !26
  %4780 = getelementptr inbounds nuw <8 x double>, ptr %4767, i64 %4774
  %4781 = load <8 x double>, ptr %4780, align 64, !tbaa !26
  %4782 = load <8 x double>, ptr %4776, align 64, !tbaa !26
  %4783 = select <8 x i1> %4402, <8 x double> %4782, <8 x double> %4781
  store <8 x double> %4783, ptr %4776, align 64, !tbaa !26
  %4784 = add nuw nsw i64 %4774, 1
  %4785 = icmp eq i64 %4784, %4765
  br i1 %4785, label %4786, label %4773, !llvm.loop !147

4786:                                             ; preds = %4773, %4742, %4764, %4703
  %4787 = getelementptr inbounds nuw i8, ptr %4434, i64 4736
  %4788 = getelementptr inbounds nuw i8, ptr %4434, i64 3840
  %4789 = getelementptr inbounds nuw i8, ptr %4434, i64 2944
  br label %4805

4790:                                             ; preds = %4805
  %4791 = getelementptr inbounds nuw i8, ptr %4434, i64 8384
  %4792 = getelementptr inbounds nuw i8, ptr %4434, i64 6080
  %4793 = load <8 x double>, ptr %4792, align 64, !tbaa !26
  %4794 = fcmp ogt <8 x double> %4793, zeroinitializer
  %4795 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4796 = fcmp une <8 x double> %4795, splat (double 2.000000e+00)
  %4797 = and <8 x i1> %4794, %4796
  %4798 = select <8 x i1> %4797, <8 x i64> %4342, <8 x i64> zeroinitializer
  %4799 = load <8 x i64>, ptr %4791, align 64, !tbaa !26
  %4800 = and <8 x i64> %4799, %4430
  %4801 = or <8 x i64> %4798, %4800
  store <8 x i64> %4801, ptr %4791, align 64, !tbaa !26
  %4802 = add nuw nsw i64 %4432, 1
  %4803 = load i64, ptr %178, align 8, !tbaa !20
  %4804 = icmp slt i64 %4802, %4803
  br i1 %4804, label %4431, label %4817, !llvm.loop !148

4805:                                             ; preds = %4786, %4805
  %4806 = phi i64 [ 0, %4786 ], [ %4815, %4805 ]
  %4807 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4787, i64 0, i64 %4806
  %4808 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4788, i64 0, i64 %4806
  %4809 = load <8 x double>, ptr %4808, align 64, !tbaa !26
  %4810 = load <8 x double>, ptr %4807, align 64, !tbaa !26
  %4811 = select <8 x i1> %4402, <8 x double> %4810, <8 x double> %4809
  store <8 x double> %4811, ptr %4807, align 64, !tbaa !26
  %4812 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4789, i64 0, i64 %4806
  %4813 = load <8 x double>, ptr %4812, align 64, !tbaa !26
  %4814 = select <8 x i1> %4402, <8 x double> %4809, <8 x double> %4813
  store <8 x double> %4814, ptr %4808, align 64, !tbaa !26
  %4815 = add nuw nsw i64 %4806, 1
  %4816 = icmp eq i64 %4815, 14
  br i1 %4816, label %4790, label %4805, !llvm.loop !149

4817:                                             ; preds = %4790
  %4818 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4819 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4820 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4821 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4822 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4823 = fdiv <8 x double> %4820, %4056
  %4824 = icmp sgt i64 %4803, 0
  br label %4825

4825:                                             ; preds = %4401, %4817
  %4826 = phi <8 x double> [ %4823, %4817 ], [ %4066, %4401 ]
  %4827 = phi i1 [ %4824, %4817 ], [ false, %4401 ]
  %4828 = phi <8 x double> [ %4822, %4817 ], [ %4045, %4401 ]
  %4829 = phi <8 x double> [ %4821, %4817 ], [ %4330, %4401 ]
  %4830 = phi <8 x double> [ %4819, %4817 ], [ %4062, %4401 ]
  %4831 = phi <8 x double> [ %4818, %4817 ], [ %4060, %4401 ]
  %4832 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4833 = fadd <8 x double> %4832, %4831
  %4834 = select <8 x i1> %4402, <8 x double> %4832, <8 x double> %4833
  store <8 x double> %4834, ptr %158, align 64, !tbaa !26
  %4835 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4836 = select <8 x i1> %4402, <8 x double> %4835, <8 x double> %4831
  store <8 x double> %4836, ptr %173, align 64, !tbaa !26
  %4837 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4838 = fadd <8 x double> %4837, splat (double 1.000000e+00)
  %4839 = select <8 x i1> %4402, <8 x double> %4837, <8 x double> %4838
  store <8 x double> %4839, ptr %145, align 64, !tbaa !26
  %4840 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4841 = fcmp olt <8 x double> %4840, %4831
  %4842 = select <8 x i1> %4402, <8 x i1> splat (i1 true), <8 x i1> %4841
  %4843 = select <8 x i1> %4842, <8 x double> %4840, <8 x double> %4831
  store <8 x double> %4843, ptr %147, align 64, !tbaa !26
  %4844 = fcmp une <8 x double> %4830, zeroinitializer
  %4845 = fcmp ueq <8 x double> %4055, zeroinitializer
  %4846 = or <8 x i1> %4845, %4844
  %4847 = fcmp olt <8 x double> %4826, splat (double 1.800000e+00)
  %4848 = select <8 x i1> %4847, <8 x double> %4826, <8 x double> splat (double 1.800000e+00)
  %4849 = select <8 x i1> %4846, <8 x double> splat (double 1.800000e+00), <8 x double> %4848
  %4850 = fcmp ogt <8 x double> %4849, splat (double 2.000000e-01)
  %4851 = select <8 x i1> %4850, <8 x double> %4849, <8 x double> splat (double 2.000000e-01)
  %4852 = fmul <8 x double> %4831, %4851
  %4853 = fmul <8 x double> %4831, splat (double 4.000000e+00)
  %4854 = fcmp olt <8 x double> %4829, %4853
  %4855 = select <8 x i1> %4854, <8 x double> %4829, <8 x double> %4853
  %4856 = fcmp ogt <8 x double> %4852, %4855
  %4857 = select <8 x i1> %4856, <8 x double> %4852, <8 x double> %4855
  %4858 = select <8 x i1> %4402, <8 x double> %4829, <8 x double> zeroinitializer
  store <8 x double> %4858, ptr %181, align 64, !tbaa !26
  %4859 = select <8 x i1> %4402, <8 x double> %4828, <8 x double> zeroinitializer
  store <8 x double> %4859, ptr %183, align 64, !tbaa !26
  %4860 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %4861 = and <8 x i64> %4860, %4430
  store <8 x i64> %4861, ptr %174, align 64, !tbaa !26
  %4862 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %4863 = and <8 x i64> %4862, %4430
  store <8 x i64> %4863, ptr %175, align 64, !tbaa !26
  %4864 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %4865 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %4866 = select <8 x i1> %4402, <8 x double> %4865, <8 x double> %4864
  store <8 x double> %4866, ptr %168, align 64, !tbaa !26
  br i1 %4827, label %4867, label %5331

4867:                                             ; preds = %4825, %5324
  %4868 = phi i64 [ %5326, %5324 ], [ 0, %4825 ]
  %4869 = phi <8 x double> [ %5325, %5324 ], [ %4857, %4825 ]
  %4870 = load ptr, ptr %151, align 8, !tbaa !28
  %4871 = getelementptr inbounds nuw %struct.Piece, ptr %4870, i64 %4868
  %4872 = getelementptr inbounds nuw i8, ptr %4871, i64 3904
  %4873 = load <8 x double>, ptr %4872, align 64, !tbaa !26
  %4874 = getelementptr inbounds nuw i8, ptr %4871, i64 1472
  %4875 = load <8 x double>, ptr %4874, align 64, !tbaa !26
  %4876 = fmul <8 x double> %4875, splat (double 1.001000e+00)
  %4877 = fcmp ole <8 x double> %4873, %4876
  %4878 = getelementptr inbounds nuw i8, ptr %4871, i64 1600
  %4879 = load <8 x double>, ptr %4878, align 64, !tbaa !26
  %4880 = getelementptr inbounds nuw i8, ptr %4871, i64 4160
  %4881 = load <8 x double>, ptr %4880, align 64, !tbaa !26
  %4882 = fsub <8 x double> %4879, %4881
  %4883 = fmul <8 x double> %4879, splat (double 1.000000e-04)
  %4884 = fcmp ole <8 x double> %4882, %4883
  %4885 = getelementptr inbounds nuw i8, ptr %4871, i64 8320
  %4886 = load <8 x i64>, ptr %4885, align 64, !tbaa !26
  %4887 = and <8 x i64> %4886, %4342
  %4888 = getelementptr inbounds nuw i8, ptr %4871, i64 7680
  %4889 = load <8 x double>, ptr %4888, align 64, !tbaa !26
  %4890 = fcmp oeq <8 x double> %4889, zeroinitializer
  %4891 = and <8 x i1> %4877, %4890
  %4892 = fcmp oeq <8 x double> %4889, splat (double 1.000000e+00)
  %4893 = and <8 x i1> %4884, %4892
  %4894 = or <8 x i1> %4891, %4893
  %4895 = select <8 x i1> %4894, <8 x i64> %4887, <8 x i64> zeroinitializer
  %4896 = fadd <8 x double> %4889, splat (double 1.000000e+00)
  %4897 = icmp eq <8 x i64> %4895, zeroinitializer
  %4898 = select <8 x i1> %4897, <8 x double> %4889, <8 x double> %4896
  store <8 x double> %4898, ptr %4888, align 64, !tbaa !26
  %4899 = getelementptr inbounds nuw i8, ptr %4871, i64 8384
  %4900 = load <8 x i64>, ptr %4899, align 64, !tbaa !26
  %4901 = or <8 x i64> %4895, %4900
  store <8 x i64> %4901, ptr %4899, align 64, !tbaa !26
  %4902 = getelementptr inbounds nuw i8, ptr %4871, i64 896
  %4903 = load <8 x double>, ptr %4902, align 64, !tbaa !26
  %4904 = getelementptr inbounds nuw i8, ptr %4871, i64 6016
  %4905 = load <8 x double>, ptr %4904, align 64, !tbaa !26
  %4906 = getelementptr inbounds nuw i8, ptr %4871, i64 6080
  %4907 = load <8 x double>, ptr %4906, align 64, !tbaa !26
  %4908 = fadd <8 x double> %4905, %4907
  %4909 = fcmp ogt <8 x double> %4908, zeroinitializer
  %4910 = xor <8 x i64> %4886, splat (i64 -1)
  %4911 = and <8 x i64> %4342, %4910
  %4912 = fcmp une <8 x double> %4903, zeroinitializer
  %4913 = or <8 x i1> %4912, %4909
  %4914 = getelementptr inbounds nuw i8, ptr %4871, i64 3968
  %4915 = load <8 x double>, ptr %4914, align 64, !tbaa !26
  %4916 = fmul <8 x double> %4903, splat (double 3.000000e-03)
  %4917 = fcmp ogt <8 x double> %4916, splat (double 0x3E7AD7F29ABCAF48)
  %4918 = select <8 x i1> %4917, <8 x double> %4916, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4919 = fcmp ole <8 x double> %4915, %4918
  %4920 = select <8 x i1> %4919, <8 x i1> %4913, <8 x i1> zeroinitializer
  %4921 = select <8 x i1> %4920, <8 x i64> %4911, <8 x i64> zeroinitializer
  %4922 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4921)
  %4923 = icmp eq i64 %4922, 0
  br i1 %4923, label %5324, label %4924

4924:                                             ; preds = %4867
  %4925 = load i64, ptr %141, align 16, !tbaa !21
  %4926 = load i64, ptr %142, align 8, !tbaa !22
  %4927 = getelementptr inbounds nuw i8, ptr %4871, i64 3840
  %4928 = getelementptr inbounds nuw i8, ptr %4871, i64 4672
  %4929 = load <8 x double>, ptr %4928, align 64, !tbaa !26
  %4930 = getelementptr inbounds nuw i8, ptr %4871, i64 5952
  %4931 = load <8 x double>, ptr %4930, align 64, !tbaa !26
  %4932 = getelementptr inbounds nuw i8, ptr %4871, i64 832
  %4933 = load <8 x double>, ptr %4932, align 64, !tbaa !26
  %4934 = getelementptr inbounds nuw i8, ptr %4871, i64 8560
  %4935 = load ptr, ptr %4934, align 16, !tbaa !49
  %4936 = add nsw i64 %4925, -1
  %4937 = getelementptr inbounds <8 x double>, ptr %4935, i64 %4936
  %4938 = load <8 x double>, ptr %4937, align 64, !tbaa !26
  %4939 = fmul <8 x double> %4933, %4938
  %4940 = fneg <8 x double> %4915
  %4941 = fdiv <8 x double> %4940, %4939
  %4942 = fcmp ogt <8 x double> %4941, splat (double 0x3E7AD7F29ABCAF48)
  %4943 = select <8 x i1> %4942, <8 x double> %4941, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4944 = load <8 x double>, ptr %4871, align 64, !tbaa !26
  %4945 = fsub <8 x double> %4944, %4943
  %4946 = getelementptr inbounds nuw i8, ptr %4871, i64 2560
  %4947 = load <8 x double>, ptr %4946, align 64, !tbaa !26
  %4948 = getelementptr inbounds nuw i8, ptr %4871, i64 2624
  %4949 = load <8 x double>, ptr %4948, align 64, !tbaa !26
  %4950 = getelementptr inbounds nuw i8, ptr %4871, i64 2688
  %4951 = load <8 x double>, ptr %4950, align 64, !tbaa !26
  %4952 = getelementptr inbounds nuw i8, ptr %4871, i64 2752
  %4953 = load <8 x double>, ptr %4952, align 64, !tbaa !26
  %4954 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4945, <8 x double> %4953, <8 x double> %4951)
  %4955 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4945, <8 x double> %4954, <8 x double> %4949)
  %4956 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4945, <8 x double> %4955, <8 x double> %4947)
  %4957 = fsub <8 x double> %4929, %4956
  %4958 = getelementptr inbounds nuw i8, ptr %4871, i64 8528
  %4959 = load ptr, ptr %4958, align 16, !tbaa !48
  %4960 = getelementptr inbounds <8 x double>, ptr %4959, i64 %4936
  %4961 = load <8 x double>, ptr %4960, align 64, !tbaa !26
  %4962 = getelementptr inbounds nuw i8, ptr %4871, i64 8512
  %4963 = load i64, ptr %4962, align 64, !tbaa !31
  %4964 = icmp sgt i64 %4925, %4963
  br i1 %4964, label %4973, label %4965

4965:                                             ; preds = %4924
  %4966 = getelementptr inbounds nuw i8, ptr %4871, i64 640
  %4967 = load <8 x double>, ptr %4966, align 64, !tbaa !26
  %4968 = getelementptr inbounds nuw i8, ptr %4871, i64 8536
  %4969 = load ptr, ptr %4968, align 8, !tbaa !58
  %4970 = getelementptr inbounds <8 x double>, ptr %4969, i64 %4936
  %4971 = load <8 x double>, ptr %4970, align 64, !tbaa !26
  %4972 = fmul <8 x double> %4971, %4967
  br label %4993

4973:                                             ; preds = %4924
  %4974 = getelementptr inbounds nuw i8, ptr %4871, i64 384
  %4975 = load <8 x double>, ptr %4974, align 64, !tbaa !26
  %4976 = getelementptr inbounds nuw i8, ptr %4871, i64 448
  %4977 = load <8 x double>, ptr %4976, align 64, !tbaa !26
  %4978 = getelementptr inbounds nuw i8, ptr %4871, i64 512
  %4979 = load <8 x double>, ptr %4978, align 64, !tbaa !26
  %4980 = fmul <8 x double> %4961, %4979
  %4981 = fmul <8 x double> %4980, splat (double 0x3FD5555555555555)
  %4982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4977, <8 x double> splat (double 5.000000e-01), <8 x double> %4981)
  %4983 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4961, <8 x double> %4982, <8 x double> %4975)
  %4984 = getelementptr inbounds nuw i8, ptr %4871, i64 8536
  %4985 = load ptr, ptr %4984, align 8, !tbaa !58
  %4986 = getelementptr inbounds <8 x double>, ptr %4985, i64 %4936
  %4987 = load <8 x double>, ptr %4986, align 64, !tbaa !26
  %4988 = fmul <8 x double> %4987, %4979
  %4989 = fmul <8 x double> %4988, splat (double 0x3FD5555555555555)
  %4990 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4977, <8 x double> splat (double 5.000000e-01), <8 x double> %4989)
  %4991 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4987, <8 x double> %4990, <8 x double> %4975)
  %4992 = fmul <8 x double> %4987, %4991
  br label %4993

4993:                                             ; preds = %4973, %4965
  %4994 = phi ptr [ %4985, %4973 ], [ %4969, %4965 ]
  %4995 = phi <8 x double> [ %4983, %4973 ], [ %4967, %4965 ]
  %4996 = phi <8 x double> [ %4992, %4973 ], [ %4972, %4965 ]
  %4997 = phi ptr [ %4984, %4973 ], [ %4968, %4965 ]
  %4998 = sitofp i64 %4926 to double
  %4999 = insertelement <8 x double> poison, double %4998, i64 0
  %5000 = shufflevector <8 x double> %4999, <8 x double> poison, <8 x i32> zeroinitializer
  %5001 = fmul <8 x double> %4961, %4995
  %5002 = fdiv <8 x double> %4943, %5000
  %5003 = getelementptr i8, ptr %4959, i64 -64
  %5004 = getelementptr i8, ptr %4935, i64 -64
  %5005 = icmp sgt i64 %4925, 0
  br i1 %5005, label %5006, label %5107

5006:                                             ; preds = %4993
  %5007 = fmul <8 x double> %4961, %4995
  %5008 = getelementptr inbounds nuw i8, ptr %4871, i64 640
  %5009 = getelementptr inbounds nuw i8, ptr %4871, i64 384
  %5010 = getelementptr inbounds nuw i8, ptr %4871, i64 448
  %5011 = getelementptr inbounds nuw i8, ptr %4871, i64 512
  %5012 = getelementptr inbounds nuw i8, ptr %4871, i64 1536
  %5013 = getelementptr inbounds nuw i8, ptr %4871, i64 8608
  %5014 = icmp eq <8 x i64> %4921, zeroinitializer
  br label %5015

5015:                                             ; preds = %5006, %5094
  %5016 = phi <8 x double> [ %4961, %5006 ], [ %5075, %5094 ]
  %5017 = phi <8 x double> [ %5007, %5006 ], [ %5074, %5094 ]
  %5018 = phi <8 x double> [ %4956, %5006 ], [ %5076, %5094 ]
  %5019 = phi <8 x double> [ %4938, %5006 ], [ %5077, %5094 ]
  %5020 = phi i64 [ %4936, %5006 ], [ %5100, %5094 ]
  %5021 = icmp eq i64 %5020, 0
  br i1 %5021, label %5022, label %5026

5022:                                             ; preds = %5015
  %5023 = fdiv <8 x double> zeroinitializer, %5018
  %5024 = fsub <8 x double> %5017, %5017
  %5025 = fmul <8 x double> %5023, %5024
  br label %5071

5026:                                             ; preds = %5015
  %5027 = getelementptr <8 x double>, ptr %5003, i64 %5020
  %5028 = load <8 x double>, ptr %5027, align 64, !tbaa !26
  %5029 = load i64, ptr %4962, align 64, !tbaa !31
  %5030 = icmp sgt i64 %5020, %5029
  br i1 %5030, label %5033, label %5031

5031:                                             ; preds = %5026
  %5032 = load <8 x double>, ptr %5008, align 64, !tbaa !26
  br label %5041

5033:                                             ; preds = %5026
  %5034 = load <8 x double>, ptr %5009, align 64, !tbaa !26
  %5035 = load <8 x double>, ptr %5010, align 64, !tbaa !26
  %5036 = load <8 x double>, ptr %5011, align 64, !tbaa !26
  %5037 = fmul <8 x double> %5028, %5036
  %5038 = fmul <8 x double> %5037, splat (double 0x3FD5555555555555)
  %5039 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5035, <8 x double> splat (double 5.000000e-01), <8 x double> %5038)
  %5040 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5028, <8 x double> %5039, <8 x double> %5034)
  br label %5041

5041:                                             ; preds = %5031, %5033
  %5042 = phi <8 x double> [ %5040, %5033 ], [ %5032, %5031 ]
  %5043 = fmul <8 x double> %5028, %5042
  %5044 = icmp slt i64 %5020, %5029
  br i1 %5044, label %5045, label %5052

5045:                                             ; preds = %5041
  %5046 = load ptr, ptr %5013, align 32, !tbaa !74
  %5047 = getelementptr inbounds nuw <8 x double>, ptr %5046, i64 %5020
  %5048 = load <8 x double>, ptr %5047, align 64, !tbaa !26
  %5049 = load <8 x double>, ptr %5012, align 64, !tbaa !26
  %5050 = fmul <8 x double> %5048, %5049
  %5051 = fmul <8 x double> %5048, %5049
  br label %5061

5052:                                             ; preds = %5041
  %5053 = load <8 x double>, ptr %5012, align 64, !tbaa !26
  %5054 = load ptr, ptr %5013, align 32, !tbaa !74
  %5055 = getelementptr inbounds nuw <8 x double>, ptr %5054, i64 %5020
  %5056 = load <8 x double>, ptr %5055, align 64, !tbaa !26
  %5057 = fsub <8 x double> %4956, %5053
  %5058 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5056, <8 x double> %5057, <8 x double> %5053)
  %5059 = fsub <8 x double> %4929, %5053
  %5060 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5056, <8 x double> %5059, <8 x double> %5053)
  br label %5061

5061:                                             ; preds = %5052, %5045
  %5062 = phi <8 x double> [ %5050, %5045 ], [ %5058, %5052 ]
  %5063 = phi <8 x double> [ %5051, %5045 ], [ %5060, %5052 ]
  %5064 = fsub <8 x double> %5063, %5062
  %5065 = fsub <8 x double> %5018, %5062
  %5066 = fdiv <8 x double> %5064, %5065
  %5067 = fsub <8 x double> %5043, %5017
  %5068 = fmul <8 x double> %5067, %5066
  %5069 = getelementptr <8 x double>, ptr %5004, i64 %5020
  %5070 = load <8 x double>, ptr %5069, align 64, !tbaa !26
  br label %5071

5071:                                             ; preds = %5061, %5022
  %5072 = phi <8 x double> [ %5068, %5061 ], [ %5025, %5022 ]
  %5073 = phi <8 x double> [ %5066, %5061 ], [ %5023, %5022 ]
  %5074 = phi <8 x double> [ %5043, %5061 ], [ %5017, %5022 ]
  %5075 = phi <8 x double> [ %5028, %5061 ], [ %5016, %5022 ]
  %5076 = phi <8 x double> [ %5062, %5061 ], [ zeroinitializer, %5022 ]
  %5077 = phi <8 x double> [ %5070, %5061 ], [ %5019, %5022 ]
  %5078 = getelementptr inbounds nuw <8 x double>, ptr %4935, i64 %5020
  %5079 = fsub <8 x double> %5077, %5019
  %5080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5079, <8 x double> %5073, <8 x double> %5019)
  %5081 = load <8 x double>, ptr %5078, align 64, !tbaa !26
  %5082 = select <8 x i1> %5014, <8 x double> %5081, <8 x double> %5080
  store <8 x double> %5082, ptr %5078, align 64, !tbaa !26
  %5083 = getelementptr inbounds nuw <8 x double>, ptr %4959, i64 %5020
  %5084 = load i64, ptr %4962, align 64, !tbaa !31
  %5085 = icmp slt i64 %5020, %5084
  br i1 %5085, label %5086, label %5088

5086:                                             ; preds = %5071
  %5087 = load <8 x double>, ptr %5008, align 64, !tbaa !26
  br label %5094

5088:                                             ; preds = %5071
  %5089 = load <8 x double>, ptr %5009, align 64, !tbaa !26
  %5090 = load <8 x double>, ptr %5010, align 64, !tbaa !26
  %5091 = load <8 x double>, ptr %5011, align 64, !tbaa !26
  %5092 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5016, <8 x double> %5091, <8 x double> %5090)
  %5093 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5016, <8 x double> %5092, <8 x double> %5089)
  br label %5094

5094:                                             ; preds = %5088, %5086
  %5095 = phi <8 x double> [ %5087, %5086 ], [ %5093, %5088 ]
  %5096 = fdiv <8 x double> %5072, %5095
  %5097 = fadd <8 x double> %5016, %5096
  %5098 = load <8 x double>, ptr %5083, align 64, !tbaa !26
  %5099 = select <8 x i1> %5014, <8 x double> %5098, <8 x double> %5097
  store <8 x double> %5099, ptr %5083, align 64, !tbaa !26
  %5100 = add nsw i64 %5020, -1
  %5101 = icmp sgt i64 %5020, 0
  br i1 %5101, label %5015, label %5102, !llvm.loop !150

5102:                                             ; preds = %5094
  %5103 = load ptr, ptr %4997, align 8, !tbaa !58
  %5104 = load i64, ptr %141, align 16, !tbaa !21
  %5105 = load i64, ptr %4962, align 64, !tbaa !31
  %5106 = add nsw i64 %5104, -1
  br label %5107

5107:                                             ; preds = %5102, %4993
  %5108 = phi i64 [ %5106, %5102 ], [ %4936, %4993 ]
  %5109 = phi i64 [ %5105, %5102 ], [ %4963, %4993 ]
  %5110 = phi i64 [ %5104, %5102 ], [ %4925, %4993 ]
  %5111 = phi ptr [ %5103, %5102 ], [ %4994, %4993 ]
  %5112 = getelementptr inbounds <8 x double>, ptr %5111, i64 %5108
  %5113 = load <8 x double>, ptr %5112, align 64, !tbaa !26
  %5114 = icmp sgt i64 %5110, %5109
  br i1 %5114, label %5118, label %5115

5115:                                             ; preds = %5107
  %5116 = getelementptr inbounds nuw i8, ptr %4871, i64 640
  %5117 = load <8 x double>, ptr %5116, align 64, !tbaa !26
  br label %5129

5118:                                             ; preds = %5107
  %5119 = getelementptr inbounds nuw i8, ptr %4871, i64 384
  %5120 = load <8 x double>, ptr %5119, align 64, !tbaa !26
  %5121 = getelementptr inbounds nuw i8, ptr %4871, i64 448
  %5122 = load <8 x double>, ptr %5121, align 64, !tbaa !26
  %5123 = getelementptr inbounds nuw i8, ptr %4871, i64 512
  %5124 = load <8 x double>, ptr %5123, align 64, !tbaa !26
  %5125 = fmul <8 x double> %5113, %5124
  %5126 = fmul <8 x double> %5125, splat (double 0x3FD5555555555555)
  %5127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5122, <8 x double> splat (double 5.000000e-01), <8 x double> %5126)
  %5128 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5113, <8 x double> %5127, <8 x double> %5120)
  br label %5129

5129:                                             ; preds = %5118, %5115
  %5130 = phi <8 x double> [ %5117, %5115 ], [ %5128, %5118 ]
  %5131 = getelementptr i8, ptr %5111, i64 -64
  %5132 = icmp sgt i64 %5110, 0
  br i1 %5132, label %5133, label %5142

5133:                                             ; preds = %5129
  %5134 = fmul <8 x double> %5113, %5130
  %5135 = getelementptr inbounds nuw i8, ptr %4871, i64 640
  %5136 = getelementptr inbounds nuw i8, ptr %4871, i64 384
  %5137 = getelementptr inbounds nuw i8, ptr %4871, i64 448
  %5138 = getelementptr inbounds nuw i8, ptr %4871, i64 512
  %5139 = getelementptr inbounds nuw i8, ptr %4871, i64 1536
  %5140 = getelementptr inbounds nuw i8, ptr %4871, i64 8608
  %5141 = icmp eq <8 x i64> %4921, zeroinitializer
  br label %5150

5142:                                             ; preds = %5214, %5129
  %5143 = icmp sgt i64 %4926, 0
  br i1 %5143, label %5144, label %5222

5144:                                             ; preds = %5142
  %5145 = getelementptr inbounds nuw i8, ptr %4871, i64 8696
  %5146 = icmp eq <8 x i64> %4921, zeroinitializer
  %5147 = getelementptr inbounds nuw i8, ptr %4871, i64 8704
  %5148 = getelementptr inbounds nuw i8, ptr %4871, i64 8648
  %5149 = getelementptr inbounds nuw i8, ptr %4871, i64 8656
  br label %5293

5150:                                             ; preds = %5133, %5214
  %5151 = phi <8 x double> [ %5113, %5133 ], [ %5197, %5214 ]
  %5152 = phi <8 x double> [ %5134, %5133 ], [ %5198, %5214 ]
  %5153 = phi <8 x double> [ %4956, %5133 ], [ %5196, %5214 ]
  %5154 = phi i64 [ %5108, %5133 ], [ %5220, %5214 ]
  %5155 = icmp eq i64 %5154, 0
  %5156 = load i64, ptr %4962, align 64, !tbaa !31
  br i1 %5155, label %5195, label %5157

5157:                                             ; preds = %5150
  %5158 = getelementptr <8 x double>, ptr %5131, i64 %5154
  %5159 = load <8 x double>, ptr %5158, align 64, !tbaa !26
  %5160 = icmp sgt i64 %5154, %5156
  br i1 %5160, label %5163, label %5161

5161:                                             ; preds = %5157
  %5162 = load <8 x double>, ptr %5135, align 64, !tbaa !26
  br label %5171

5163:                                             ; preds = %5157
  %5164 = load <8 x double>, ptr %5136, align 64, !tbaa !26
  %5165 = load <8 x double>, ptr %5137, align 64, !tbaa !26
  %5166 = load <8 x double>, ptr %5138, align 64, !tbaa !26
  %5167 = fmul <8 x double> %5159, %5166
  %5168 = fmul <8 x double> %5167, splat (double 0x3FD5555555555555)
  %5169 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5165, <8 x double> splat (double 5.000000e-01), <8 x double> %5168)
  %5170 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5159, <8 x double> %5169, <8 x double> %5164)
  br label %5171

5171:                                             ; preds = %5161, %5163
  %5172 = phi <8 x double> [ %5170, %5163 ], [ %5162, %5161 ]
  %5173 = fmul <8 x double> %5159, %5172
  %5174 = icmp slt i64 %5154, %5156
  br i1 %5174, label %5175, label %5182

5175:                                             ; preds = %5171
  %5176 = load ptr, ptr %5140, align 32, !tbaa !74
  %5177 = getelementptr inbounds nuw <8 x double>, ptr %5176, i64 %5154
  %5178 = load <8 x double>, ptr %5177, align 64, !tbaa !26
  %5179 = load <8 x double>, ptr %5139, align 64, !tbaa !26
  %5180 = fmul <8 x double> %5178, %5179
  %5181 = fmul <8 x double> %5178, %5179
  br label %5191

5182:                                             ; preds = %5171
  %5183 = load <8 x double>, ptr %5139, align 64, !tbaa !26
  %5184 = load ptr, ptr %5140, align 32, !tbaa !74
  %5185 = getelementptr inbounds nuw <8 x double>, ptr %5184, i64 %5154
  %5186 = load <8 x double>, ptr %5185, align 64, !tbaa !26
  %5187 = fsub <8 x double> %4956, %5183
  %5188 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5186, <8 x double> %5187, <8 x double> %5183)
  %5189 = fsub <8 x double> %4929, %5183
  %5190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5186, <8 x double> %5189, <8 x double> %5183)
  br label %5191

5191:                                             ; preds = %5182, %5175
  %5192 = phi <8 x double> [ %5180, %5175 ], [ %5188, %5182 ]
  %5193 = phi <8 x double> [ %5181, %5175 ], [ %5190, %5182 ]
  %5194 = fsub <8 x double> %5193, %5192
  br label %5195

5195:                                             ; preds = %5150, %5191
  %5196 = phi <8 x double> [ %5192, %5191 ], [ zeroinitializer, %5150 ]
  %5197 = phi <8 x double> [ %5159, %5191 ], [ %5151, %5150 ]
  %5198 = phi <8 x double> [ %5173, %5191 ], [ %5152, %5150 ]
  %5199 = phi <8 x double> [ %5194, %5191 ], [ zeroinitializer, %5150 ]
  %5200 = fsub <8 x double> %5153, %5196
  %5201 = fdiv <8 x double> %5199, %5200
  %5202 = fsub <8 x double> %5198, %5152
  %5203 = fmul <8 x double> %5202, %5201
  %5204 = getelementptr inbounds nuw <8 x double>, ptr %5111, i64 %5154
  %5205 = icmp slt i64 %5154, %5156
  br i1 %5205, label %5206, label %5208

5206:                                             ; preds = %5195
  %5207 = load <8 x double>, ptr %5135, align 64, !tbaa !26
  br label %5214

5208:                                             ; preds = %5195
  %5209 = load <8 x double>, ptr %5136, align 64, !tbaa !26
  %5210 = load <8 x double>, ptr %5137, align 64, !tbaa !26
  %5211 = load <8 x double>, ptr %5138, align 64, !tbaa !26
  %5212 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5151, <8 x double> %5211, <8 x double> %5210)
  %5213 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5151, <8 x double> %5212, <8 x double> %5209)
  br label %5214

5214:                                             ; preds = %5208, %5206
  %5215 = phi <8 x double> [ %5207, %5206 ], [ %5213, %5208 ]
  %5216 = fdiv <8 x double> %5203, %5215
  %5217 = fadd <8 x double> %5151, %5216
  %5218 = load <8 x double>, ptr %5204, align 64, !tbaa !26
  %5219 = select <8 x i1> %5141, <8 x double> %5218, <8 x double> %5217
  store <8 x double> %5219, ptr %5204, align 64, !tbaa !26
  %5220 = add nsw i64 %5154, -1
  %5221 = icmp sgt i64 %5154, 0
  br i1 %5221, label %5150, label %5142, !llvm.loop !150

5222:                                             ; preds = %5293, %5142
  %5223 = getelementptr inbounds nuw i8, ptr %4871, i64 8696
  %5224 = load ptr, ptr %5223, align 8, !tbaa !51
  %5225 = getelementptr inbounds <8 x double>, ptr %5224, i64 %4926
  %5226 = getelementptr inbounds nuw i8, ptr %4871, i64 1408
  %5227 = load <8 x double>, ptr %5226, align 64, !tbaa !26
  %5228 = load <8 x double>, ptr %5225, align 64, !tbaa !26
  %5229 = icmp eq <8 x i64> %4921, zeroinitializer
  %5230 = select <8 x i1> %5229, <8 x double> %5228, <8 x double> %5227
  store <8 x double> %5230, ptr %5225, align 64, !tbaa !26
  %5231 = getelementptr inbounds nuw i8, ptr %4871, i64 8704
  %5232 = load ptr, ptr %5231, align 64, !tbaa !61
  %5233 = getelementptr inbounds <8 x double>, ptr %5232, i64 %4926
  %5234 = load <8 x double>, ptr %5226, align 64, !tbaa !26
  %5235 = load <8 x double>, ptr %5233, align 64, !tbaa !26
  %5236 = select <8 x i1> %5229, <8 x double> %5235, <8 x double> %5234
  store <8 x double> %5236, ptr %5233, align 64, !tbaa !26
  %5237 = getelementptr inbounds nuw i8, ptr %4871, i64 4736
  %5238 = fneg <8 x double> %4957
  %5239 = getelementptr inbounds nuw i8, ptr %4871, i64 768
  %5240 = load <8 x double>, ptr %4927, align 64, !tbaa !26
  %5241 = select <8 x i1> %5229, <8 x double> %5240, <8 x double> %4945
  store <8 x double> %5241, ptr %4927, align 64, !tbaa !26
  %5242 = getelementptr inbounds nuw i8, ptr %4871, i64 3904
  %5243 = load <8 x double>, ptr %5242, align 64, !tbaa !26
  %5244 = select <8 x i1> %5229, <8 x double> %5243, <8 x double> %4956
  store <8 x double> %5244, ptr %5242, align 64, !tbaa !26
  %5245 = getelementptr inbounds nuw i8, ptr %4871, i64 4672
  %5246 = load <8 x double>, ptr %5245, align 64, !tbaa !26
  %5247 = select <8 x i1> %5229, <8 x double> %5246, <8 x double> %4956
  store <8 x double> %5247, ptr %5245, align 64, !tbaa !26
  %5248 = getelementptr inbounds nuw i8, ptr %4871, i64 4032
  %5249 = load <8 x double>, ptr %5248, align 64, !tbaa !26
  %5250 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5238, <8 x double> %4939, <8 x double> %5249)
  %5251 = select <8 x i1> %5229, <8 x double> %5249, <8 x double> %5250
  store <8 x double> %5251, ptr %5248, align 64, !tbaa !26
  %5252 = getelementptr inbounds nuw i8, ptr %4871, i64 3968
  %5253 = load <8 x double>, ptr %5252, align 64, !tbaa !26
  %5254 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4957, <8 x double> %4939, <8 x double> %5253)
  %5255 = select <8 x i1> %5229, <8 x double> %5253, <8 x double> %5254
  store <8 x double> %5255, ptr %5252, align 64, !tbaa !26
  %5256 = getelementptr inbounds nuw i8, ptr %4871, i64 4288
  %5257 = load <8 x double>, ptr %5256, align 64, !tbaa !26
  %5258 = load <8 x double>, ptr %5239, align 64, !tbaa !26
  %5259 = fneg <8 x double> %5258
  %5260 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5259, <8 x double> %4931, <8 x double> %5001)
  %5261 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4957, <8 x double> %5260, <8 x double> %5257)
  %5262 = select <8 x i1> %5229, <8 x double> %5257, <8 x double> %5261
  store <8 x double> %5262, ptr %5256, align 64, !tbaa !26
  %5263 = load <8 x double>, ptr %5237, align 64, !tbaa !26
  %5264 = select <8 x i1> %5229, <8 x double> %5263, <8 x double> %4945
  store <8 x double> %5264, ptr %5237, align 64, !tbaa !26
  %5265 = getelementptr inbounds nuw i8, ptr %4871, i64 4800
  %5266 = load <8 x double>, ptr %5265, align 64, !tbaa !26
  %5267 = select <8 x i1> %5229, <8 x double> %5266, <8 x double> %4956
  store <8 x double> %5267, ptr %5265, align 64, !tbaa !26
  %5268 = getelementptr inbounds nuw i8, ptr %4871, i64 5568
  %5269 = load <8 x double>, ptr %5268, align 64, !tbaa !26
  %5270 = select <8 x i1> %5229, <8 x double> %5269, <8 x double> %4956
  store <8 x double> %5270, ptr %5268, align 64, !tbaa !26
  %5271 = getelementptr inbounds nuw i8, ptr %4871, i64 4928
  %5272 = load <8 x double>, ptr %5271, align 64, !tbaa !26
  %5273 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5238, <8 x double> %4939, <8 x double> %5272)
  %5274 = select <8 x i1> %5229, <8 x double> %5272, <8 x double> %5273
  store <8 x double> %5274, ptr %5271, align 64, !tbaa !26
  %5275 = getelementptr inbounds nuw i8, ptr %4871, i64 4864
  %5276 = load <8 x double>, ptr %5275, align 64, !tbaa !26
  %5277 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4957, <8 x double> %4939, <8 x double> %5276)
  %5278 = select <8 x i1> %5229, <8 x double> %5276, <8 x double> %5277
  store <8 x double> %5278, ptr %5275, align 64, !tbaa !26
  %5279 = getelementptr inbounds nuw i8, ptr %4871, i64 5184
  %5280 = load <8 x double>, ptr %5279, align 64, !tbaa !26
  %5281 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5259, <8 x double> %4931, <8 x double> %4996)
  %5282 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4957, <8 x double> %5281, <8 x double> %5280)
  %5283 = select <8 x i1> %5229, <8 x double> %5280, <8 x double> %5282
  store <8 x double> %5283, ptr %5279, align 64, !tbaa !26
  %5284 = load <8 x i64>, ptr %4885, align 64, !tbaa !26
  %5285 = or <8 x i64> %5284, %4921
  store <8 x i64> %5285, ptr %4885, align 64, !tbaa !26
  %5286 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %5287 = fmul <8 x double> %5286, splat (double 4.000000e+01)
  %5288 = fcmp olt <8 x double> %4869, %5287
  %5289 = select <8 x i1> %5288, <8 x double> %4869, <8 x double> %5287
  %5290 = icmp ne <8 x i64> %4921, zeroinitializer
  %5291 = select <8 x i1> %4912, <8 x i1> %5290, <8 x i1> zeroinitializer
  %5292 = select <8 x i1> %5291, <8 x double> %5289, <8 x double> %4869
  br label %5324

5293:                                             ; preds = %5144, %5293
  %5294 = phi i64 [ 0, %5144 ], [ %5322, %5293 ]
  %5295 = uitofp nneg i64 %5294 to double
  %5296 = insertelement <8 x double> poison, double %5295, i64 0
  %5297 = shufflevector <8 x double> %5296, <8 x double> poison, <8 x i32> zeroinitializer
  %5298 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5297, <8 x double> %5002, <8 x double> %4945)
  %5299 = load <8 x double>, ptr %4946, align 64, !tbaa !26
  %5300 = load <8 x double>, ptr %4948, align 64, !tbaa !26
  %5301 = load <8 x double>, ptr %4950, align 64, !tbaa !26
  %5302 = load <8 x double>, ptr %4952, align 64, !tbaa !26
  %5303 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5298, <8 x double> %5302, <8 x double> %5301)
  %5304 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5298, <8 x double> %5303, <8 x double> %5300)
  %5305 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5298, <8 x double> %5304, <8 x double> %5299)
  %5306 = load ptr, ptr %5145, align 8, !tbaa !51
  %5307 = getelementptr inbounds nuw <8 x double>, ptr %5306, i64 %5294
  %5308 = load <8 x double>, ptr %5307, align 64, !tbaa !26
  %5309 = select <8 x i1> %5146, <8 x double> %5308, <8 x double> %5305
  store <8 x double> %5309, ptr %5307, align 64, !tbaa !26
  %5310 = load ptr, ptr %5147, align 64, !tbaa !61
  %5311 = getelementptr inbounds nuw <8 x double>, ptr %5310, i64 %5294
  %5312 = load <8 x double>, ptr %5311, align 64, !tbaa !26
  %5313 = select <8 x i1> %5146, <8 x double> %5312, <8 x double> %5305
  store <8 x double> %5313, ptr %5311, align 64, !tbaa !26
  %5314 = load ptr, ptr %5148, align 8, !tbaa !52
  %5315 = getelementptr inbounds nuw <8 x double>, ptr %5314, i64 %5294
  %5316 = load <8 x double>, ptr %5315, align 64, !tbaa !26
  %5317 = select <8 x i1> %5146, <8 x double> %5316, <8 x double> %4931
  store <8 x double> %5317, ptr %5315, align 64, !tbaa !26
  %5318 = load ptr, ptr %5149, align 16, !tbaa !63
  %5319 = getelementptr inbounds nuw <8 x double>, ptr %5318, i64 %5294
  %5320 = load <8 x double>, ptr %5319, align 64, !tbaa !26
  %5321 = select <8 x i1> %5146, <8 x double> %5320, <8 x double> %4931
  store <8 x double> %5321, ptr %5319, align 64, !tbaa !26
  %5322 = add nuw nsw i64 %5294, 1
  %5323 = icmp eq i64 %5322, %4926
  br i1 %5323, label %5222, label %5293, !llvm.loop !151

5324:                                             ; preds = %5222, %4867
  %5325 = phi <8 x double> [ %5292, %5222 ], [ %4869, %4867 ]
  %5326 = add nuw nsw i64 %4868, 1
  %5327 = load i64, ptr %178, align 8, !tbaa !20
  %5328 = icmp slt i64 %5326, %5327
  br i1 %5328, label %4867, label %5329, !llvm.loop !152

5329:                                             ; preds = %5324
  %5330 = load <8 x double>, ptr %158, align 64, !tbaa !26
  br label %5331

5331:                                             ; preds = %5329, %4825
  %5332 = phi <8 x double> [ %4834, %4825 ], [ %5330, %5329 ]
  %5333 = phi <8 x double> [ %4857, %4825 ], [ %5325, %5329 ]
  %5334 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %5335 = select <8 x i1> %4402, <8 x double> %5334, <8 x double> %5333
  store <8 x double> %5335, ptr %161, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %4342, ptr %13, align 64, !tbaa !26
  %5336 = load ptr, ptr %238, align 64, !tbaa !39
  %5337 = getelementptr inbounds nuw i8, ptr %5336, i64 64
  store <8 x double> %5332, ptr %5336, align 64, !tbaa !26
  %5338 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %5339 = getelementptr inbounds nuw i8, ptr %5336, i64 128
  store <8 x double> %5338, ptr %5337, align 64, !tbaa !26
  %5340 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5341 = getelementptr inbounds nuw i8, ptr %5336, i64 192
  store <8 x double> %5340, ptr %5339, align 64, !tbaa !26
  %5342 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %5343 = getelementptr inbounds nuw i8, ptr %5336, i64 256
  store <8 x double> %5342, ptr %5341, align 64, !tbaa !26
  %5344 = load i64, ptr %178, align 8, !tbaa !20
  %5345 = icmp sgt i64 %5344, 0
  br i1 %5345, label %5350, label %5346

5346:                                             ; preds = %5350, %5331
  %5347 = phi ptr [ %5343, %5331 ], [ %5356, %5350 ]
  %5348 = load i64, ptr %240, align 8, !tbaa !153
  %5349 = icmp eq i64 %5348, 0
  br i1 %5349, label %5485, label %5360

5350:                                             ; preds = %5331, %5350
  %5351 = phi ptr [ %5356, %5350 ], [ %5343, %5331 ]
  %5352 = phi i64 [ %5357, %5350 ], [ 0, %5331 ]
  %5353 = load ptr, ptr %151, align 8, !tbaa !28
  %5354 = getelementptr inbounds nuw %struct.Piece, ptr %5353, i64 %5352, i32 35
  %5355 = load <8 x double>, ptr %5354, align 64, !tbaa !26
  %5356 = getelementptr inbounds nuw i8, ptr %5351, i64 64
  store <8 x double> %5355, ptr %5351, align 64, !tbaa !26
  %5357 = add nuw nsw i64 %5352, 1
  %5358 = load i64, ptr %178, align 8, !tbaa !20
  %5359 = icmp slt i64 %5357, %5358
  br i1 %5359, label %5350, label %5346, !llvm.loop !154

5360:                                             ; preds = %5346
  %5361 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %5362 = getelementptr inbounds nuw i8, ptr %5347, i64 64
  store <8 x double> %5361, ptr %5347, align 64, !tbaa !26
  %5363 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %5364 = getelementptr inbounds nuw i8, ptr %5347, i64 128
  store <8 x double> %5363, ptr %5362, align 64, !tbaa !26
  %5365 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5366 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %5367 = fsub <8 x double> %5365, %5366
  %5368 = fcmp ogt <8 x double> %5367, zeroinitializer
  %5369 = select <8 x i1> %5368, <8 x double> %5367, <8 x double> zeroinitializer
  store <8 x double> %5369, ptr %5364, align 64, !tbaa !26
  %5370 = load i64, ptr %178, align 8, !tbaa !20
  %5371 = icmp sgt i64 %5370, 0
  br i1 %5371, label %5372, label %5485

5372:                                             ; preds = %5360
  %5373 = getelementptr inbounds nuw i8, ptr %5347, i64 192
  br label %5374

5374:                                             ; preds = %5372, %5374
  %5375 = phi ptr [ %5481, %5374 ], [ %5373, %5372 ]
  %5376 = phi i64 [ %5482, %5374 ], [ 0, %5372 ]
  %5377 = load ptr, ptr %151, align 8, !tbaa !28
  %5378 = getelementptr inbounds nuw %struct.Piece, ptr %5377, i64 %5376
  %5379 = getelementptr inbounds nuw i8, ptr %5378, i64 8528
  %5380 = load ptr, ptr %5379, align 16, !tbaa !48
  %5381 = load i64, ptr %141, align 16, !tbaa !21
  %5382 = getelementptr <8 x double>, ptr %5380, i64 %5381
  %5383 = getelementptr i8, ptr %5382, i64 -64
  %5384 = load <8 x double>, ptr %5383, align 64, !tbaa !26
  %5385 = getelementptr inbounds nuw i8, ptr %5378, i64 7232
  %5386 = load <8 x double>, ptr %5385, align 64, !tbaa !26
  %5387 = getelementptr inbounds nuw i8, ptr %5378, i64 5952
  %5388 = load <8 x double>, ptr %5387, align 64, !tbaa !26
  %5389 = fsub <8 x double> %5388, %5384
  %5390 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5386, <8 x double> %5389, <8 x double> %5384)
  %5391 = getelementptr inbounds nuw i8, ptr %5375, i64 64
  store <8 x double> %5390, ptr %5375, align 64, !tbaa !26
  %5392 = getelementptr inbounds nuw i8, ptr %5378, i64 6784
  %5393 = load <8 x double>, ptr %5392, align 64, !tbaa !26
  %5394 = getelementptr inbounds nuw i8, ptr %5375, i64 128
  store <8 x double> %5393, ptr %5391, align 64, !tbaa !26
  %5395 = load <8 x double>, ptr %5378, align 64, !tbaa !26
  %5396 = getelementptr inbounds nuw i8, ptr %5378, i64 3840
  %5397 = load <8 x double>, ptr %5396, align 64, !tbaa !26
  %5398 = fsub <8 x double> %5395, %5397
  %5399 = getelementptr inbounds nuw i8, ptr %5375, i64 192
  store <8 x double> %5398, ptr %5394, align 64, !tbaa !26
  %5400 = getelementptr inbounds nuw i8, ptr %5378, i64 4160
  %5401 = load <8 x double>, ptr %5400, align 64, !tbaa !26
  %5402 = getelementptr inbounds nuw i8, ptr %5375, i64 256
  store <8 x double> %5401, ptr %5399, align 64, !tbaa !26
  %5403 = getelementptr inbounds nuw i8, ptr %5378, i64 4096
  %5404 = load <8 x double>, ptr %5403, align 64, !tbaa !26
  %5405 = getelementptr inbounds nuw i8, ptr %5375, i64 320
  store <8 x double> %5404, ptr %5402, align 64, !tbaa !26
  %5406 = getelementptr inbounds nuw i8, ptr %5378, i64 3968
  %5407 = load <8 x double>, ptr %5406, align 64, !tbaa !26
  %5408 = getelementptr inbounds nuw i8, ptr %5375, i64 384
  store <8 x double> %5407, ptr %5405, align 64, !tbaa !26
  %5409 = getelementptr inbounds nuw i8, ptr %5378, i64 4224
  %5410 = load <8 x double>, ptr %5409, align 64, !tbaa !26
  %5411 = getelementptr inbounds nuw i8, ptr %5375, i64 448
  store <8 x double> %5410, ptr %5408, align 64, !tbaa !26
  %5412 = getelementptr inbounds nuw i8, ptr %5378, i64 8648
  %5413 = load i64, ptr %142, align 8, !tbaa !22
  %5414 = sitofp i64 %5413 to double
  %5415 = tail call double @llvm.fmuladd.f64(double %5414, double 7.500000e-01, double -5.000000e-01)
  %5416 = fcmp ogt double %5415, 0.000000e+00
  %5417 = select i1 %5416, double %5415, double 0.000000e+00
  %5418 = fptosi double %5417 to i64
  %5419 = add nsw i64 %5413, -2
  %5420 = tail call i64 @llvm.smin.i64(i64 %5419, i64 %5418)
  %5421 = sitofp i64 %5420 to double
  %5422 = fsub double %5415, %5421
  %5423 = fsub double 1.000000e+00, %5422
  %5424 = insertelement <8 x double> poison, double %5423, i64 0
  %5425 = shufflevector <8 x double> %5424, <8 x double> poison, <8 x i32> zeroinitializer
  %5426 = load ptr, ptr %5412, align 8, !tbaa !52
  %5427 = getelementptr inbounds <8 x double>, ptr %5426, i64 %5420
  %5428 = load <8 x double>, ptr %5427, align 64, !tbaa !26
  %5429 = insertelement <8 x double> poison, double %5422, i64 0
  %5430 = shufflevector <8 x double> %5429, <8 x double> poison, <8 x i32> zeroinitializer
  %5431 = getelementptr i8, ptr %5427, i64 64
  %5432 = load <8 x double>, ptr %5431, align 64, !tbaa !26
  %5433 = fmul <8 x double> %5432, %5430
  %5434 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5425, <8 x double> %5428, <8 x double> %5433)
  store <8 x double> %5434, ptr %5411, align 64, !tbaa !26
  %5435 = load i64, ptr %142, align 8, !tbaa !22
  %5436 = sitofp i64 %5435 to double
  %5437 = tail call double @llvm.fmuladd.f64(double %5436, double 5.000000e-01, double -5.000000e-01)
  %5438 = fcmp ogt double %5437, 0.000000e+00
  %5439 = select i1 %5438, double %5437, double 0.000000e+00
  %5440 = fptosi double %5439 to i64
  %5441 = add nsw i64 %5435, -2
  %5442 = tail call i64 @llvm.smin.i64(i64 %5441, i64 %5440)
  %5443 = sitofp i64 %5442 to double
  %5444 = fsub double %5437, %5443
  %5445 = fsub double 1.000000e+00, %5444
  %5446 = insertelement <8 x double> poison, double %5445, i64 0
  %5447 = shufflevector <8 x double> %5446, <8 x double> poison, <8 x i32> zeroinitializer
  %5448 = load ptr, ptr %5412, align 8, !tbaa !52
  %5449 = getelementptr inbounds <8 x double>, ptr %5448, i64 %5442
  %5450 = load <8 x double>, ptr %5449, align 64, !tbaa !26
  %5451 = insertelement <8 x double> poison, double %5444, i64 0
  %5452 = shufflevector <8 x double> %5451, <8 x double> poison, <8 x i32> zeroinitializer
  %5453 = getelementptr i8, ptr %5449, i64 64
  %5454 = load <8 x double>, ptr %5453, align 64, !tbaa !26
  %5455 = fmul <8 x double> %5454, %5452
  %5456 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5447, <8 x double> %5450, <8 x double> %5455)
  %5457 = getelementptr inbounds nuw i8, ptr %5375, i64 512
  store <8 x double> %5456, ptr %5457, align 64, !tbaa !26
  %5458 = load i64, ptr %142, align 8, !tbaa !22
  %5459 = sitofp i64 %5458 to double
  %5460 = tail call double @llvm.fmuladd.f64(double %5459, double 2.500000e-01, double -5.000000e-01)
  %5461 = fcmp ogt double %5460, 0.000000e+00
  %5462 = select i1 %5461, double %5460, double 0.000000e+00
  %5463 = fptosi double %5462 to i64
  %5464 = add nsw i64 %5458, -2
  %5465 = tail call i64 @llvm.smin.i64(i64 %5464, i64 %5463)
  %5466 = sitofp i64 %5465 to double
  %5467 = fsub double %5460, %5466
  %5468 = fsub double 1.000000e+00, %5467
  %5469 = insertelement <8 x double> poison, double %5468, i64 0
  %5470 = shufflevector <8 x double> %5469, <8 x double> poison, <8 x i32> zeroinitializer
  %5471 = load ptr, ptr %5412, align 8, !tbaa !52
  %5472 = getelementptr inbounds <8 x double>, ptr %5471, i64 %5465
  %5473 = load <8 x double>, ptr %5472, align 64, !tbaa !26
  %5474 = insertelement <8 x double> poison, double %5467, i64 0
  %5475 = shufflevector <8 x double> %5474, <8 x double> poison, <8 x i32> zeroinitializer
  %5476 = getelementptr i8, ptr %5472, i64 64
  %5477 = load <8 x double>, ptr %5476, align 64, !tbaa !26
  %5478 = fmul <8 x double> %5477, %5475
  %5479 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5470, <8 x double> %5473, <8 x double> %5478)
  %5480 = getelementptr inbounds nuw i8, ptr %5375, i64 576
  store <8 x double> %5479, ptr %5480, align 64, !tbaa !26
  %5481 = getelementptr inbounds nuw i8, ptr %5375, i64 640
  %5482 = add nuw nsw i64 %5376, 1
  %5483 = load i64, ptr %178, align 8, !tbaa !20
  %5484 = icmp slt i64 %5482, %5483
  br i1 %5484, label %5374, label %5485, !llvm.loop !155

5485:                                             ; preds = %5374, %5360, %5346
  %5486 = getelementptr inbounds nuw i8, ptr %5347, i64 192
  br label %5487

5487:                                             ; preds = %5485, %5646
  %5488 = phi i64 [ 0, %5485 ], [ %5647, %5646 ]
  %5489 = getelementptr inbounds nuw i64, ptr %13, i64 %5488
  %5490 = load i64, ptr %5489, align 8, !tbaa !30
  %5491 = icmp eq i64 %5490, 0
  br i1 %5491, label %5646, label %5492

5492:                                             ; preds = %5487
  %5493 = getelementptr inbounds nuw [8 x i64], ptr %241, i64 0, i64 %5488
  %5494 = load i64, ptr %5493, align 8, !tbaa !30
  %5495 = load i64, ptr %242, align 8, !tbaa !156
  %5496 = icmp eq i64 %5494, %5495
  br i1 %5496, label %5500, label %5497

5497:                                             ; preds = %5492
  %5498 = getelementptr inbounds nuw [8 x ptr], ptr %246, i64 0, i64 %5488
  %5499 = load ptr, ptr %5498, align 8, !tbaa !157
  br label %5515

5500:                                             ; preds = %5492
  %5501 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %5488
  %5502 = load i64, ptr %5501, align 8, !tbaa !30
  %5503 = load ptr, ptr %243, align 8, !tbaa !158
  %5504 = load i64, ptr %134, align 8, !tbaa !43
  %5505 = getelementptr inbounds i64, ptr %5503, i64 %5504
  store i64 %5502, ptr %5505, align 8, !tbaa !30
  %5506 = load ptr, ptr %244, align 8, !tbaa !159
  %5507 = load i64, ptr %134, align 8, !tbaa !43
  %5508 = add nsw i64 %5507, 1
  store i64 %5508, ptr %134, align 8, !tbaa !43
  %5509 = load i64, ptr %242, align 8, !tbaa !156
  %5510 = mul nsw i64 %5509, %5507
  %5511 = load i64, ptr %245, align 8, !tbaa !15
  %5512 = mul nsw i64 %5510, %5511
  %5513 = getelementptr inbounds double, ptr %5506, i64 %5512
  %5514 = getelementptr inbounds nuw [8 x ptr], ptr %246, i64 0, i64 %5488
  store ptr %5513, ptr %5514, align 8, !tbaa !157
  br label %5515

5515:                                             ; preds = %5497, %5500
  %5516 = phi i64 [ %5494, %5497 ], [ 0, %5500 ]
  %5517 = phi ptr [ %5499, %5497 ], [ %5513, %5500 ]
  %5518 = add nsw i64 %5516, 1
  store i64 %5518, ptr %5493, align 8, !tbaa !30
  %5519 = load i64, ptr %245, align 8, !tbaa !15
  %5520 = mul nsw i64 %5519, %5516
  %5521 = getelementptr inbounds double, ptr %5517, i64 %5520
  %5522 = load ptr, ptr %238, align 64, !tbaa !39
  %5523 = icmp ult ptr %5522, %5343
  br i1 %5523, label %5589, label %5524

5524:                                             ; preds = %5589, %5515
  %5525 = phi ptr [ %5521, %5515 ], [ %5594, %5589 ]
  %5526 = load i64, ptr %150, align 64, !tbaa !16
  %5527 = icmp sgt i64 %5526, 0
  br i1 %5527, label %5528, label %5576

5528:                                             ; preds = %5524
  %5529 = trunc nuw nsw i64 %5488 to i32
  %5530 = and i64 %5526, 3
  %5531 = icmp ult i64 %5526, 4
  br i1 %5531, label %5560, label %5532

5532:                                             ; preds = %5528
  %5533 = and i64 %5526, 9223372036854775804
  br label %5534

5534:                                             ; preds = %5534, %5532
  %5535 = phi i64 [ 0, %5532 ], [ %5557, %5534 ]
  %5536 = phi ptr [ %5525, %5532 ], [ %5554, %5534 ]
  %5537 = phi i64 [ 0, %5532 ], [ %5558, %5534 ]
  %5538 = getelementptr inbounds nuw <8 x double>, ptr %5343, i64 %5535
  %5539 = getelementptr i8, ptr %5536, i64 8
  %5540 = load <8 x double>, ptr %5538, align 64, !tbaa !26
  %5541 = extractelement <8 x double> %5540, i32 %5529
  store double %5541, ptr %5536, align 8, !tbaa !44
  %5542 = or disjoint i64 %5535, 1
  %5543 = getelementptr inbounds nuw <8 x double>, ptr %5343, i64 %5542
  %5544 = getelementptr i8, ptr %5536, i64 16
  %5545 = load <8 x double>, ptr %5543, align 64, !tbaa !26
  %5546 = extractelement <8 x double> %5545, i32 %5529
  store double %5546, ptr %5539, align 8, !tbaa !44
  %5547 = or disjoint i64 %5535, 2
  %5548 = getelementptr inbounds nuw <8 x double>, ptr %5343, i64 %5547
  %5549 = getelementptr i8, ptr %5536, i64 24
  %5550 = load <8 x double>, ptr %5548, align 64, !tbaa !26
  %5551 = extractelement <8 x double> %5550, i32 %5529
  store double %5551, ptr %5544, align 8, !tbaa !44
  %5552 = or disjoint i64 %5535, 3
  %5553 = getelementptr inbounds nuw <8 x double>, ptr %5343, i64 %5552
  %5554 = getelementptr i8, ptr %5536, i64 32
  %5555 = load <8 x double>, ptr %5553, align 64, !tbaa !26
  %5556 = extractelement <8 x double> %5555, i32 %5529
  store double %5556, ptr %5549, align 8, !tbaa !44
  %5557 = add nuw nsw i64 %5535, 4
  %5558 = add i64 %5537, 4
  %5559 = icmp eq i64 %5558, %5533
  br i1 %5559, label %5560, label %5534, !llvm.loop !160

5560:                                             ; preds = %5534, %5528
  %5561 = phi ptr [ poison, %5528 ], [ %5554, %5534 ]
  %5562 = phi i64 [ 0, %5528 ], [ %5557, %5534 ]
  %5563 = phi ptr [ %5525, %5528 ], [ %5554, %5534 ]
  %5564 = icmp eq i64 %5530, 0
  br i1 %5564, label %5576, label %5565

5565:                                             ; preds = %5560, %5565
  %5566 = phi i64 [ %5573, %5565 ], [ %5562, %5560 ]
  %5567 = phi ptr [ %5570, %5565 ], [ %5563, %5560 ]
  %5568 = phi i64 [ %5574, %5565 ], [ 0, %5560 ]
  %5569 = getelementptr inbounds nuw <8 x double>, ptr %5343, i64 %5566
  %5570 = getelementptr i8, ptr %5567, i64 8
  %5571 = load <8 x double>, ptr %5569, align 64, !tbaa !26
  %5572 = extractelement <8 x double> %5571, i32 %5529
  store double %5572, ptr %5567, align 8, !tbaa !44
  %5573 = add nuw nsw i64 %5566, 1
  %5574 = add i64 %5568, 1
  %5575 = icmp eq i64 %5574, %5530
  br i1 %5575, label %5576, label %5565, !llvm.loop !161

5576:                                             ; preds = %5560, %5565, %5524
  %5577 = phi ptr [ %5525, %5524 ], [ %5561, %5560 ], [ %5570, %5565 ]
  %5578 = load i64, ptr %240, align 8, !tbaa !153
  %5579 = icmp eq i64 %5578, 0
  br i1 %5579, label %5646, label %5580

5580:                                             ; preds = %5576
  %5581 = getelementptr inbounds nuw double, ptr %5347, i64 %5488
  %5582 = load double, ptr %5581, align 8, !tbaa !44
  %5583 = getelementptr inbounds nuw i8, ptr %5577, i64 8
  store double %5582, ptr %5577, align 8, !tbaa !44
  %5584 = getelementptr inbounds nuw i8, ptr %5581, i64 64
  %5585 = load double, ptr %5584, align 8, !tbaa !44
  %5586 = getelementptr inbounds nuw i8, ptr %5577, i64 16
  store double %5585, ptr %5583, align 8, !tbaa !44
  %5587 = getelementptr inbounds nuw i8, ptr %5581, i64 128
  %5588 = load double, ptr %5587, align 8, !tbaa !44
  store double %5588, ptr %5586, align 8, !tbaa !44
  br i1 %5527, label %5597, label %5646

5589:                                             ; preds = %5515, %5589
  %5590 = phi ptr [ %5595, %5589 ], [ %5522, %5515 ]
  %5591 = phi ptr [ %5594, %5589 ], [ %5521, %5515 ]
  %5592 = getelementptr inbounds nuw double, ptr %5590, i64 %5488
  %5593 = load double, ptr %5592, align 8, !tbaa !44
  %5594 = getelementptr inbounds nuw i8, ptr %5591, i64 8
  store double %5593, ptr %5591, align 8, !tbaa !44
  %5595 = getelementptr inbounds nuw i8, ptr %5590, i64 64
  %5596 = icmp ult ptr %5595, %5343
  br i1 %5596, label %5589, label %5524, !llvm.loop !163

5597:                                             ; preds = %5580
  %5598 = getelementptr inbounds nuw i8, ptr %5577, i64 24
  %5599 = trunc nuw nsw i64 %5488 to i32
  br label %5600

5600:                                             ; preds = %5597, %5600
  %5601 = phi i64 [ %5644, %5600 ], [ 0, %5597 ]
  %5602 = phi ptr [ %5643, %5600 ], [ %5598, %5597 ]
  %5603 = mul nuw nsw i64 %5601, 640
  %5604 = getelementptr inbounds nuw i8, ptr %5486, i64 %5603
  %5605 = load <8 x double>, ptr %5604, align 64, !tbaa !26
  %5606 = extractelement <8 x double> %5605, i32 %5599
  %5607 = getelementptr inbounds nuw i8, ptr %5602, i64 8
  store double %5606, ptr %5602, align 8, !tbaa !44
  %5608 = getelementptr inbounds nuw i8, ptr %5604, i64 64
  %5609 = load <8 x double>, ptr %5608, align 64, !tbaa !26
  %5610 = extractelement <8 x double> %5609, i32 %5599
  %5611 = getelementptr inbounds nuw i8, ptr %5602, i64 16
  store double %5610, ptr %5607, align 8, !tbaa !44
  %5612 = getelementptr inbounds nuw i8, ptr %5604, i64 128
  %5613 = load <8 x double>, ptr %5612, align 64, !tbaa !26
  %5614 = extractelement <8 x double> %5613, i32 %5599
  %5615 = getelementptr inbounds nuw i8, ptr %5602, i64 24
  store double %5614, ptr %5611, align 8, !tbaa !44
  %5616 = getelementptr inbounds nuw i8, ptr %5604, i64 192
  %5617 = load <8 x double>, ptr %5616, align 64, !tbaa !26
  %5618 = extractelement <8 x double> %5617, i32 %5599
  %5619 = getelementptr inbounds nuw i8, ptr %5602, i64 32
  store double %5618, ptr %5615, align 8, !tbaa !44
  %5620 = getelementptr inbounds nuw i8, ptr %5604, i64 256
  %5621 = load <8 x double>, ptr %5620, align 64, !tbaa !26
  %5622 = extractelement <8 x double> %5621, i32 %5599
  %5623 = getelementptr inbounds nuw i8, ptr %5602, i64 40
  store double %5622, ptr %5619, align 8, !tbaa !44
  %5624 = getelementptr inbounds nuw i8, ptr %5604, i64 320
  %5625 = load <8 x double>, ptr %5624, align 64, !tbaa !26
  %5626 = extractelement <8 x double> %5625, i32 %5599
  %5627 = getelementptr inbounds nuw i8, ptr %5602, i64 48
  store double %5626, ptr %5623, align 8, !tbaa !44
  %5628 = getelementptr inbounds nuw i8, ptr %5604, i64 384
  %5629 = load <8 x double>, ptr %5628, align 64, !tbaa !26
  %5630 = extractelement <8 x double> %5629, i32 %5599
  %5631 = getelementptr inbounds nuw i8, ptr %5602, i64 56
  store double %5630, ptr %5627, align 8, !tbaa !44
  %5632 = getelementptr inbounds nuw i8, ptr %5604, i64 448
  %5633 = load <8 x double>, ptr %5632, align 64, !tbaa !26
  %5634 = extractelement <8 x double> %5633, i32 %5599
  %5635 = getelementptr inbounds nuw i8, ptr %5602, i64 64
  store double %5634, ptr %5631, align 8, !tbaa !44
  %5636 = getelementptr inbounds nuw i8, ptr %5604, i64 512
  %5637 = load <8 x double>, ptr %5636, align 64, !tbaa !26
  %5638 = extractelement <8 x double> %5637, i32 %5599
  %5639 = getelementptr inbounds nuw i8, ptr %5602, i64 72
  store double %5638, ptr %5635, align 8, !tbaa !44
  %5640 = getelementptr inbounds nuw i8, ptr %5604, i64 576
  %5641 = load <8 x double>, ptr %5640, align 64, !tbaa !26
  %5642 = extractelement <8 x double> %5641, i32 %5599
  %5643 = getelementptr inbounds nuw i8, ptr %5602, i64 80
  store double %5642, ptr %5639, align 8, !tbaa !44
  %5644 = add nuw nsw i64 %5601, 1
  %5645 = icmp eq i64 %5644, %5526
  br i1 %5645, label %5646, label %5600, !llvm.loop !160

5646:                                             ; preds = %5600, %5580, %5576, %5487
  %5647 = add nuw nsw i64 %5488, 1
  %5648 = icmp eq i64 %5647, 8
  br i1 %5648, label %5649, label %5487, !llvm.loop !164

5649:                                             ; preds = %5646
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %5650 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %5651 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %5652 = fsub <8 x double> %5650, %5651
  %5653 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %5654 = fadd <8 x double> %5653, splat (double -1.000000e-09)
  %5655 = fcmp oge <8 x double> %5652, %5654
  %5656 = select <8 x i1> %5655, <8 x i64> %4342, <8 x i64> zeroinitializer
  %5657 = load i64, ptr %178, align 8, !tbaa !20
  %5658 = icmp sgt i64 %5657, 0
  br i1 %5658, label %5659, label %5691

5659:                                             ; preds = %5649
  %5660 = load ptr, ptr %151, align 8, !tbaa !28
  %5661 = and i64 %5657, 1
  %5662 = icmp eq i64 %5657, 1
  br i1 %5662, label %5681, label %5663

5663:                                             ; preds = %5659
  %5664 = and i64 %5657, 9223372036854775806
  br label %5665

5665:                                             ; preds = %5665, %5663
  %5666 = phi i64 [ 0, %5663 ], [ %5678, %5665 ]
  %5667 = phi <8 x double> [ splat (double 1.000000e+09), %5663 ], [ %5677, %5665 ]
  %5668 = phi i64 [ 0, %5663 ], [ %5679, %5665 ]
  %5669 = getelementptr inbounds nuw %struct.Piece, ptr %5660, i64 %5666, i32 35
  %5670 = load <8 x double>, ptr %5669, align 64, !tbaa !26
  %5671 = fcmp olt <8 x double> %5667, %5670
  %5672 = select <8 x i1> %5671, <8 x double> %5667, <8 x double> %5670
  %5673 = or disjoint i64 %5666, 1
  %5674 = getelementptr inbounds nuw %struct.Piece, ptr %5660, i64 %5673, i32 35
  %5675 = load <8 x double>, ptr %5674, align 64, !tbaa !26
  %5676 = fcmp olt <8 x double> %5672, %5675
  %5677 = select <8 x i1> %5676, <8 x double> %5672, <8 x double> %5675
  %5678 = add nuw nsw i64 %5666, 2
  %5679 = add i64 %5668, 2
  %5680 = icmp eq i64 %5679, %5664
  br i1 %5680, label %5681, label %5665, !llvm.loop !139

5681:                                             ; preds = %5665, %5659
  %5682 = phi <8 x double> [ poison, %5659 ], [ %5677, %5665 ]
  %5683 = phi i64 [ 0, %5659 ], [ %5678, %5665 ]
  %5684 = phi <8 x double> [ splat (double 1.000000e+09), %5659 ], [ %5677, %5665 ]
  %5685 = icmp eq i64 %5661, 0
  br i1 %5685, label %5691, label %5686

5686:                                             ; preds = %5681
  %5687 = getelementptr inbounds nuw %struct.Piece, ptr %5660, i64 %5683, i32 35
  %5688 = load <8 x double>, ptr %5687, align 64, !tbaa !26
  %5689 = fcmp olt <8 x double> %5684, %5688
  %5690 = select <8 x i1> %5689, <8 x double> %5684, <8 x double> %5688
  br label %5691

5691:                                             ; preds = %5686, %5681, %5649
  %5692 = phi <8 x double> [ splat (double 1.000000e+09), %5649 ], [ %5682, %5681 ], [ %5690, %5686 ]
  %5693 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %5694 = select <8 x i1> %4402, <8 x double> %5693, <8 x double> %5692
  store <8 x double> %5694, ptr %234, align 64, !tbaa !26
  %5695 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %5696 = fcmp une <8 x double> %5695, zeroinitializer
  %5697 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5698 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %5699 = fsub <8 x double> %5697, %5698
  %5700 = fcmp une <8 x double> %5695, splat (double 1.000000e+00)
  %5701 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %5702 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %5703 = fsub <8 x double> %5701, %5702
  %5704 = select <8 x i1> %5700, <8 x double> splat (double -1.000000e+00), <8 x double> %5703
  %5705 = fcmp une <8 x double> %5695, splat (double 2.000000e+00)
  %5706 = fsub <8 x double> %5694, %5702
  %5707 = select <8 x i1> %5705, <8 x double> %5704, <8 x double> %5706
  %5708 = fcmp une <8 x double> %5695, splat (double 3.000000e+00)
  %5709 = fsub <8 x double> %5699, %5702
  %5710 = select <8 x i1> %5708, <8 x double> %5707, <8 x double> %5709
  %5711 = fcmp une <8 x double> %5695, splat (double 4.000000e+00)
  %5712 = fsub <8 x double> %5702, %5699
  %5713 = select <8 x i1> %5711, <8 x double> %5710, <8 x double> %5712
  %5714 = fcmp oge <8 x double> %5713, splat (double 0xBEB0C6F7A0B5ED8D)
  %5715 = select <8 x i1> %5714, <8 x i1> %5696, <8 x i1> zeroinitializer
  %5716 = select <8 x i1> %5715, <8 x i64> %4342, <8 x i64> zeroinitializer
  %5717 = xor <8 x i64> %5716, splat (i64 -1)
  %5718 = and <8 x i64> %5656, %5717
  %5719 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %5720 = icmp ne <8 x i64> %5718, zeroinitializer
  %5721 = select <8 x i1> %5696, <8 x i1> %5720, <8 x i1> zeroinitializer
  %5722 = select <8 x i1> %5721, <8 x double> splat (double 2.000000e+00), <8 x double> %5719
  store <8 x double> %5722, ptr %148, align 64, !tbaa !26
  %5723 = or <8 x i64> %5716, %5656
  %5724 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %5725 = fadd <8 x double> %5724, splat (double 1.000000e+00)
  %5726 = icmp eq <8 x i64> %5723, zeroinitializer
  %5727 = select <8 x i1> %5726, <8 x double> %5724, <8 x double> %5725
  store <8 x double> %5727, ptr %239, align 64, !tbaa !26
  %5728 = xor <8 x i64> %5723, %4342
  %5729 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %5730 = fcmp oeq <8 x double> %5729, zeroinitializer
  %5731 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %5732 = fcmp oeq <8 x double> %5731, zeroinitializer
  %5733 = select <8 x i1> %5732, <8 x i1> %5730, <8 x i1> zeroinitializer
  %5734 = select <8 x i1> %5733, <8 x i64> %5728, <8 x i64> zeroinitializer
  %5735 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %5736 = fmul <8 x double> %5735, splat (double 5.000000e-01)
  %5737 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %5738 = fadd <8 x double> %5737, %5736
  %5739 = fadd <8 x double> %5738, splat (double -4.000000e-03)
  %5740 = fcmp ult <8 x double> %5701, %5739
  %5741 = fsub <8 x double> %5737, %5736
  %5742 = fadd <8 x double> %5741, splat (double 4.000000e-03)
  %5743 = fcmp ole <8 x double> %5701, %5742
  %5744 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %5745 = select <8 x i1> %5743, <8 x i64> splat (i64 -1), <8 x i64> %5744
  %5746 = select <8 x i1> %5740, <8 x i64> %5745, <8 x i64> zeroinitializer
  %5747 = xor <8 x i64> %5746, %5744
  %5748 = and <8 x i64> %5747, %5734
  %5749 = and <8 x i64> %5746, %5734
  %5750 = xor <8 x i64> %5734, splat (i64 -1)
  %5751 = and <8 x i64> %5744, %5750
  %5752 = or <8 x i64> %5749, %5751
  store <8 x i64> %5752, ptr %165, align 64, !tbaa !26
  %5753 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %5754 = or <8 x i64> %5748, %5753
  store <8 x i64> %5754, ptr %175, align 64, !tbaa !26
  %5755 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5723)
  %5756 = icmp eq i64 %5755, 0
  br i1 %5756, label %5791, label %5757

5757:                                             ; preds = %5691
  %5758 = extractelement <8 x i64> %5723, i64 0
  %5759 = icmp eq i64 %5758, 0
  br i1 %5759, label %5761, label %5760

5760:                                             ; preds = %5757
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %5761

5761:                                             ; preds = %5760, %5757
  %5762 = extractelement <8 x i64> %5723, i64 1
  %5763 = icmp eq i64 %5762, 0
  br i1 %5763, label %5765, label %5764

5764:                                             ; preds = %5761
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %5765

5765:                                             ; preds = %5764, %5761
  %5766 = extractelement <8 x i64> %5723, i64 2
  %5767 = icmp eq i64 %5766, 0
  br i1 %5767, label %5769, label %5768

5768:                                             ; preds = %5765
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %5769

5769:                                             ; preds = %5768, %5765
  %5770 = extractelement <8 x i64> %5723, i64 3
  %5771 = icmp eq i64 %5770, 0
  br i1 %5771, label %5773, label %5772

5772:                                             ; preds = %5769
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %5773

5773:                                             ; preds = %5772, %5769
  %5774 = extractelement <8 x i64> %5723, i64 4
  %5775 = icmp eq i64 %5774, 0
  br i1 %5775, label %5777, label %5776

5776:                                             ; preds = %5773
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %5777

5777:                                             ; preds = %5776, %5773
  %5778 = extractelement <8 x i64> %5723, i64 5
  %5779 = icmp eq i64 %5778, 0
  br i1 %5779, label %5781, label %5780

5780:                                             ; preds = %5777
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %5781

5781:                                             ; preds = %5780, %5777
  %5782 = extractelement <8 x i64> %5723, i64 6
  %5783 = icmp eq i64 %5782, 0
  br i1 %5783, label %5785, label %5784

5784:                                             ; preds = %5781
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %5785

5785:                                             ; preds = %5784, %5781
  %5786 = extractelement <8 x i64> %5723, i64 7
  %5787 = icmp eq i64 %5786, 0
  br i1 %5787, label %5789, label %5788

5788:                                             ; preds = %5785
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %5789

5789:                                             ; preds = %5788, %5785
  %5790 = load <8 x double>, ptr %148, align 64, !tbaa !26
  br label %5791

5791:                                             ; preds = %5789, %5691
  %5792 = phi <8 x double> [ %5790, %5789 ], [ %5722, %5691 ]
  %5793 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %5794 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %5795 = fadd <8 x double> %5794, splat (double -1.000000e+00)
  %5796 = fcmp oge <8 x double> %5793, %5795
  %5797 = select <8 x i1> %5796, <8 x i64> %4342, <8 x i64> zeroinitializer
  %5798 = icmp eq <8 x i64> %5797, zeroinitializer
  %5799 = select <8 x i1> %5798, <8 x double> %5792, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5799, ptr %148, align 64, !tbaa !26
  %5800 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5797)
  %5801 = icmp eq i64 %5800, 0
  br i1 %5801, label %549, label %5802

5802:                                             ; preds = %5791
  %5803 = extractelement <8 x i64> %5797, i64 0
  %5804 = icmp eq i64 %5803, 0
  br i1 %5804, label %5806, label %5805

5805:                                             ; preds = %5802
  store double 1.000000e+00, ptr %140, align 8, !tbaa !44
  br label %5806

5806:                                             ; preds = %5805, %5802
  %5807 = extractelement <8 x i64> %5797, i64 1
  %5808 = icmp eq i64 %5807, 0
  br i1 %5808, label %5810, label %5809

5809:                                             ; preds = %5806
  store double 1.000000e+00, ptr %277, align 8, !tbaa !44
  br label %5810

5810:                                             ; preds = %5809, %5806
  %5811 = extractelement <8 x i64> %5797, i64 2
  %5812 = icmp eq i64 %5811, 0
  br i1 %5812, label %5814, label %5813

5813:                                             ; preds = %5810
  store double 1.000000e+00, ptr %278, align 8, !tbaa !44
  br label %5814

5814:                                             ; preds = %5813, %5810
  %5815 = extractelement <8 x i64> %5797, i64 3
  %5816 = icmp eq i64 %5815, 0
  br i1 %5816, label %5818, label %5817

5817:                                             ; preds = %5814
  store double 1.000000e+00, ptr %279, align 8, !tbaa !44
  br label %5818

5818:                                             ; preds = %5817, %5814
  %5819 = extractelement <8 x i64> %5797, i64 4
  %5820 = icmp eq i64 %5819, 0
  br i1 %5820, label %5822, label %5821

5821:                                             ; preds = %5818
  store double 1.000000e+00, ptr %280, align 8, !tbaa !44
  br label %5822

5822:                                             ; preds = %5821, %5818
  %5823 = extractelement <8 x i64> %5797, i64 5
  %5824 = icmp eq i64 %5823, 0
  br i1 %5824, label %5826, label %5825

5825:                                             ; preds = %5822
  store double 1.000000e+00, ptr %281, align 8, !tbaa !44
  br label %5826

5826:                                             ; preds = %5825, %5822
  %5827 = extractelement <8 x i64> %5797, i64 6
  %5828 = icmp eq i64 %5827, 0
  br i1 %5828, label %5830, label %5829

5829:                                             ; preds = %5826
  store double 1.000000e+00, ptr %282, align 8, !tbaa !44
  br label %5830

5830:                                             ; preds = %5829, %5826
  %5831 = extractelement <8 x i64> %5797, i64 7
  %5832 = icmp eq i64 %5831, 0
  br i1 %5832, label %549, label %5833

5833:                                             ; preds = %5830
  store double 1.000000e+00, ptr %283, align 8, !tbaa !44
  br label %549

5834:                                             ; preds = %549, %554, %131
  %5835 = phi i64 [ 0, %131 ], [ 1, %554 ], [ 0, %549 ]
  ret i64 %5835
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2344
  %6 = sext i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #6
  %8 = getelementptr inbounds i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  %9 = load i64, ptr %5, align 8, !tbaa !27
  %10 = add nsw i64 %9, 1
  store i64 %10, ptr %5, align 8, !tbaa !27
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %12 = load ptr, ptr %11, align 64, !tbaa !39
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %14 = load <8 x double>, ptr %13, align 64, !tbaa !26
  %15 = getelementptr inbounds nuw i8, ptr %12, i64 64
  store <8 x double> %14, ptr %12, align 64, !tbaa !26
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %17 = load <8 x double>, ptr %16, align 64, !tbaa !26
  %18 = getelementptr inbounds nuw i8, ptr %12, i64 128
  store <8 x double> %17, ptr %15, align 64, !tbaa !26
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %21 = load <8 x double>, ptr %20, align 64, !tbaa !26
  %22 = getelementptr inbounds nuw i8, ptr %12, i64 192
  store <8 x double> %21, ptr %18, align 64, !tbaa !26
  %23 = load <8 x double>, ptr %19, align 64, !tbaa !26
  %24 = getelementptr inbounds nuw i8, ptr %12, i64 256
  store <8 x double> %23, ptr %22, align 64, !tbaa !26
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %26 = load i64, ptr %25, align 8, !tbaa !20
  %27 = icmp sgt i64 %26, 0
  br i1 %27, label %28, label %30

28:                                               ; preds = %3
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 6152
  br label %35

30:                                               ; preds = %35, %3
  %31 = phi ptr [ %24, %3 ], [ %41, %35 ]
  %32 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %33 = load i64, ptr %32, align 8, !tbaa !153
  %34 = icmp eq i64 %33, 0
  br i1 %34, label %176, label %45

35:                                               ; preds = %28, %35
  %36 = phi ptr [ %24, %28 ], [ %41, %35 ]
  %37 = phi i64 [ 0, %28 ], [ %42, %35 ]
  %38 = load ptr, ptr %29, align 8, !tbaa !28
  %39 = getelementptr inbounds nuw %struct.Piece, ptr %38, i64 %37, i32 35
  %40 = load <8 x double>, ptr %39, align 64, !tbaa !26
  %41 = getelementptr inbounds nuw i8, ptr %36, i64 64
  store <8 x double> %40, ptr %36, align 64, !tbaa !26
  %42 = add nuw nsw i64 %37, 1
  %43 = load i64, ptr %25, align 8, !tbaa !20
  %44 = icmp slt i64 %42, %43
  br i1 %44, label %35, label %30, !llvm.loop !154

45:                                               ; preds = %30
  %46 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %47 = load <8 x double>, ptr %46, align 64, !tbaa !26
  %48 = getelementptr inbounds nuw i8, ptr %31, i64 64
  store <8 x double> %47, ptr %31, align 64, !tbaa !26
  %49 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %50 = load <8 x double>, ptr %49, align 64, !tbaa !26
  %51 = getelementptr inbounds nuw i8, ptr %31, i64 128
  store <8 x double> %50, ptr %48, align 64, !tbaa !26
  %52 = load <8 x double>, ptr %20, align 64, !tbaa !26
  %53 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %54 = load <8 x double>, ptr %53, align 64, !tbaa !26
  %55 = fsub <8 x double> %52, %54
  %56 = fcmp ogt <8 x double> %55, zeroinitializer
  %57 = select <8 x i1> %56, <8 x double> %55, <8 x double> zeroinitializer
  store <8 x double> %57, ptr %51, align 64, !tbaa !26
  %58 = load i64, ptr %25, align 8, !tbaa !20
  %59 = icmp sgt i64 %58, 0
  br i1 %59, label %60, label %176

60:                                               ; preds = %45
  %61 = getelementptr inbounds nuw i8, ptr %31, i64 192
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 6152
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 2328
  br label %65

65:                                               ; preds = %60, %65
  %66 = phi ptr [ %61, %60 ], [ %172, %65 ]
  %67 = phi i64 [ 0, %60 ], [ %173, %65 ]
  %68 = load ptr, ptr %62, align 8, !tbaa !28
  %69 = getelementptr inbounds nuw %struct.Piece, ptr %68, i64 %67
  %70 = getelementptr inbounds nuw i8, ptr %69, i64 8528
  %71 = load ptr, ptr %70, align 16, !tbaa !48
  %72 = load i64, ptr %63, align 16, !tbaa !21
  %73 = getelementptr <8 x double>, ptr %71, i64 %72
  %74 = getelementptr i8, ptr %73, i64 -64
  %75 = load <8 x double>, ptr %74, align 64, !tbaa !26
  %76 = getelementptr inbounds nuw i8, ptr %69, i64 7232
  %77 = load <8 x double>, ptr %76, align 64, !tbaa !26
  %78 = getelementptr inbounds nuw i8, ptr %69, i64 5952
  %79 = load <8 x double>, ptr %78, align 64, !tbaa !26
  %80 = fsub <8 x double> %79, %75
  %81 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %77, <8 x double> %80, <8 x double> %75)
  %82 = getelementptr inbounds nuw i8, ptr %66, i64 64
  store <8 x double> %81, ptr %66, align 64, !tbaa !26
  %83 = getelementptr inbounds nuw i8, ptr %69, i64 6784
  %84 = load <8 x double>, ptr %83, align 64, !tbaa !26
  %85 = getelementptr inbounds nuw i8, ptr %66, i64 128
  store <8 x double> %84, ptr %82, align 64, !tbaa !26
  %86 = load <8 x double>, ptr %69, align 64, !tbaa !26
  %87 = getelementptr inbounds nuw i8, ptr %69, i64 3840
  %88 = load <8 x double>, ptr %87, align 64, !tbaa !26
  %89 = fsub <8 x double> %86, %88
  %90 = getelementptr inbounds nuw i8, ptr %66, i64 192
  store <8 x double> %89, ptr %85, align 64, !tbaa !26
  %91 = getelementptr inbounds nuw i8, ptr %69, i64 4160
  %92 = load <8 x double>, ptr %91, align 64, !tbaa !26
  %93 = getelementptr inbounds nuw i8, ptr %66, i64 256
  store <8 x double> %92, ptr %90, align 64, !tbaa !26
  %94 = getelementptr inbounds nuw i8, ptr %69, i64 4096
  %95 = load <8 x double>, ptr %94, align 64, !tbaa !26
  %96 = getelementptr inbounds nuw i8, ptr %66, i64 320
  store <8 x double> %95, ptr %93, align 64, !tbaa !26
  %97 = getelementptr inbounds nuw i8, ptr %69, i64 3968
  %98 = load <8 x double>, ptr %97, align 64, !tbaa !26
  %99 = getelementptr inbounds nuw i8, ptr %66, i64 384
  store <8 x double> %98, ptr %96, align 64, !tbaa !26
  %100 = getelementptr inbounds nuw i8, ptr %69, i64 4224
  %101 = load <8 x double>, ptr %100, align 64, !tbaa !26
  %102 = getelementptr inbounds nuw i8, ptr %66, i64 448
  store <8 x double> %101, ptr %99, align 64, !tbaa !26
  %103 = getelementptr inbounds nuw i8, ptr %69, i64 8648
  %104 = load i64, ptr %64, align 8, !tbaa !22
  %105 = sitofp i64 %104 to double
  %106 = tail call double @llvm.fmuladd.f64(double %105, double 7.500000e-01, double -5.000000e-01)
  %107 = fcmp ogt double %106, 0.000000e+00
  %108 = select i1 %107, double %106, double 0.000000e+00
  %109 = fptosi double %108 to i64
  %110 = add nsw i64 %104, -2
  %111 = tail call i64 @llvm.smin.i64(i64 %110, i64 %109)
  %112 = sitofp i64 %111 to double
  %113 = fsub double %106, %112
  %114 = fsub double 1.000000e+00, %113
  %115 = insertelement <8 x double> poison, double %114, i64 0
  %116 = shufflevector <8 x double> %115, <8 x double> poison, <8 x i32> zeroinitializer
  %117 = load ptr, ptr %103, align 8, !tbaa !52
  %118 = getelementptr inbounds <8 x double>, ptr %117, i64 %111
  %119 = load <8 x double>, ptr %118, align 64, !tbaa !26
  %120 = insertelement <8 x double> poison, double %113, i64 0
  %121 = shufflevector <8 x double> %120, <8 x double> poison, <8 x i32> zeroinitializer
  %122 = getelementptr i8, ptr %118, i64 64
  %123 = load <8 x double>, ptr %122, align 64, !tbaa !26
  %124 = fmul <8 x double> %123, %121
  %125 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %116, <8 x double> %119, <8 x double> %124)
  store <8 x double> %125, ptr %102, align 64, !tbaa !26
  %126 = load i64, ptr %64, align 8, !tbaa !22
  %127 = sitofp i64 %126 to double
  %128 = tail call double @llvm.fmuladd.f64(double %127, double 5.000000e-01, double -5.000000e-01)
  %129 = fcmp ogt double %128, 0.000000e+00
  %130 = select i1 %129, double %128, double 0.000000e+00
  %131 = fptosi double %130 to i64
  %132 = add nsw i64 %126, -2
  %133 = tail call i64 @llvm.smin.i64(i64 %132, i64 %131)
  %134 = sitofp i64 %133 to double
  %135 = fsub double %128, %134
  %136 = fsub double 1.000000e+00, %135
  %137 = insertelement <8 x double> poison, double %136, i64 0
  %138 = shufflevector <8 x double> %137, <8 x double> poison, <8 x i32> zeroinitializer
  %139 = load ptr, ptr %103, align 8, !tbaa !52
  %140 = getelementptr inbounds <8 x double>, ptr %139, i64 %133
  %141 = load <8 x double>, ptr %140, align 64, !tbaa !26
  %142 = insertelement <8 x double> poison, double %135, i64 0
  %143 = shufflevector <8 x double> %142, <8 x double> poison, <8 x i32> zeroinitializer
  %144 = getelementptr i8, ptr %140, i64 64
  %145 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %146 = fmul <8 x double> %145, %143
  %147 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %138, <8 x double> %141, <8 x double> %146)
  %148 = getelementptr inbounds nuw i8, ptr %66, i64 512
  store <8 x double> %147, ptr %148, align 64, !tbaa !26
  %149 = load i64, ptr %64, align 8, !tbaa !22
  %150 = sitofp i64 %149 to double
  %151 = tail call double @llvm.fmuladd.f64(double %150, double 2.500000e-01, double -5.000000e-01)
  %152 = fcmp ogt double %151, 0.000000e+00
  %153 = select i1 %152, double %151, double 0.000000e+00
  %154 = fptosi double %153 to i64
  %155 = add nsw i64 %149, -2
  %156 = tail call i64 @llvm.smin.i64(i64 %155, i64 %154)
  %157 = sitofp i64 %156 to double
  %158 = fsub double %151, %157
  %159 = fsub double 1.000000e+00, %158
  %160 = insertelement <8 x double> poison, double %159, i64 0
  %161 = shufflevector <8 x double> %160, <8 x double> poison, <8 x i32> zeroinitializer
  %162 = load ptr, ptr %103, align 8, !tbaa !52
  %163 = getelementptr inbounds <8 x double>, ptr %162, i64 %156
  %164 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %165 = insertelement <8 x double> poison, double %158, i64 0
  %166 = shufflevector <8 x double> %165, <8 x double> poison, <8 x i32> zeroinitializer
  %167 = getelementptr i8, ptr %163, i64 64
  %168 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %169 = fmul <8 x double> %168, %166
  %170 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %161, <8 x double> %164, <8 x double> %169)
  %171 = getelementptr inbounds nuw i8, ptr %66, i64 576
  store <8 x double> %170, ptr %171, align 64, !tbaa !26
  %172 = getelementptr inbounds nuw i8, ptr %66, i64 640
  %173 = add nuw nsw i64 %67, 1
  %174 = load i64, ptr %25, align 8, !tbaa !20
  %175 = icmp slt i64 %173, %174
  br i1 %175, label %65, label %176, !llvm.loop !155

176:                                              ; preds = %65, %45, %30
  %177 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %179 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %181 = load ptr, ptr %180, align 8
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %185 = getelementptr inbounds nuw i8, ptr %0, i64 6016
  %186 = load ptr, ptr %11, align 64
  %187 = icmp ult ptr %186, %24
  %188 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %189 = getelementptr inbounds nuw i8, ptr %31, i64 192
  br label %190

190:                                              ; preds = %176, %346
  %191 = phi i64 [ 0, %176 ], [ %347, %346 ]
  %192 = getelementptr inbounds nuw i64, ptr %4, i64 %191
  %193 = load i64, ptr %192, align 8, !tbaa !30
  %194 = icmp eq i64 %193, 0
  br i1 %194, label %346, label %195

195:                                              ; preds = %190
  %196 = getelementptr inbounds nuw [8 x i64], ptr %177, i64 0, i64 %191
  %197 = load i64, ptr %196, align 8, !tbaa !30
  %198 = load i64, ptr %178, align 8, !tbaa !156
  %199 = icmp eq i64 %197, %198
  br i1 %199, label %203, label %200

200:                                              ; preds = %195
  %201 = getelementptr inbounds nuw [8 x ptr], ptr %185, i64 0, i64 %191
  %202 = load ptr, ptr %201, align 8, !tbaa !157
  br label %217

203:                                              ; preds = %195
  %204 = getelementptr inbounds nuw [8 x i64], ptr %179, i64 0, i64 %191
  %205 = load i64, ptr %204, align 8, !tbaa !30
  %206 = load i64, ptr %182, align 8, !tbaa !43
  %207 = getelementptr inbounds i64, ptr %181, i64 %206
  store i64 %205, ptr %207, align 8, !tbaa !30
  %208 = load ptr, ptr %183, align 8, !tbaa !159
  %209 = load i64, ptr %182, align 8, !tbaa !43
  %210 = add nsw i64 %209, 1
  store i64 %210, ptr %182, align 8, !tbaa !43
  %211 = load i64, ptr %178, align 8, !tbaa !156
  %212 = mul nsw i64 %211, %209
  %213 = load i64, ptr %184, align 8, !tbaa !15
  %214 = mul nsw i64 %212, %213
  %215 = getelementptr inbounds double, ptr %208, i64 %214
  %216 = getelementptr inbounds nuw [8 x ptr], ptr %185, i64 0, i64 %191
  store ptr %215, ptr %216, align 8, !tbaa !157
  br label %217

217:                                              ; preds = %200, %203
  %218 = phi i64 [ %197, %200 ], [ 0, %203 ]
  %219 = phi ptr [ %202, %200 ], [ %215, %203 ]
  %220 = add nsw i64 %218, 1
  store i64 %220, ptr %196, align 8, !tbaa !30
  %221 = load i64, ptr %184, align 8, !tbaa !15
  %222 = mul nsw i64 %221, %218
  %223 = getelementptr inbounds double, ptr %219, i64 %222
  br i1 %187, label %289, label %224

224:                                              ; preds = %289, %217
  %225 = phi ptr [ %223, %217 ], [ %294, %289 ]
  %226 = load i64, ptr %188, align 64, !tbaa !16
  %227 = icmp sgt i64 %226, 0
  br i1 %227, label %228, label %276

228:                                              ; preds = %224
  %229 = trunc nuw nsw i64 %191 to i32
  %230 = and i64 %226, 3
  %231 = icmp ult i64 %226, 4
  br i1 %231, label %260, label %232

232:                                              ; preds = %228
  %233 = and i64 %226, 9223372036854775804
  br label %234

234:                                              ; preds = %234, %232
  %235 = phi i64 [ 0, %232 ], [ %257, %234 ]
  %236 = phi ptr [ %225, %232 ], [ %254, %234 ]
  %237 = phi i64 [ 0, %232 ], [ %258, %234 ]
  %238 = getelementptr inbounds nuw <8 x double>, ptr %24, i64 %235
  %239 = getelementptr i8, ptr %236, i64 8
  %240 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %241 = extractelement <8 x double> %240, i32 %229
  store double %241, ptr %236, align 8, !tbaa !44
  %242 = or disjoint i64 %235, 1
  %243 = getelementptr inbounds nuw <8 x double>, ptr %24, i64 %242
  %244 = getelementptr i8, ptr %236, i64 16
  %245 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %246 = extractelement <8 x double> %245, i32 %229
  store double %246, ptr %239, align 8, !tbaa !44
  %247 = or disjoint i64 %235, 2
  %248 = getelementptr inbounds nuw <8 x double>, ptr %24, i64 %247
  %249 = getelementptr i8, ptr %236, i64 24
  %250 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %251 = extractelement <8 x double> %250, i32 %229
  store double %251, ptr %244, align 8, !tbaa !44
  %252 = or disjoint i64 %235, 3
  %253 = getelementptr inbounds nuw <8 x double>, ptr %24, i64 %252
  %254 = getelementptr i8, ptr %236, i64 32
  %255 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %256 = extractelement <8 x double> %255, i32 %229
  store double %256, ptr %249, align 8, !tbaa !44
  %257 = add nuw nsw i64 %235, 4
  %258 = add i64 %237, 4
  %259 = icmp eq i64 %258, %233
  br i1 %259, label %260, label %234, !llvm.loop !160

260:                                              ; preds = %234, %228
  %261 = phi ptr [ poison, %228 ], [ %254, %234 ]
  %262 = phi i64 [ 0, %228 ], [ %257, %234 ]
  %263 = phi ptr [ %225, %228 ], [ %254, %234 ]
  %264 = icmp eq i64 %230, 0
  br i1 %264, label %276, label %265

265:                                              ; preds = %260, %265
  %266 = phi i64 [ %273, %265 ], [ %262, %260 ]
  %267 = phi ptr [ %270, %265 ], [ %263, %260 ]
  %268 = phi i64 [ %274, %265 ], [ 0, %260 ]
  %269 = getelementptr inbounds nuw <8 x double>, ptr %24, i64 %266
  %270 = getelementptr i8, ptr %267, i64 8
  %271 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %272 = extractelement <8 x double> %271, i32 %229
  store double %272, ptr %267, align 8, !tbaa !44
  %273 = add nuw nsw i64 %266, 1
  %274 = add i64 %268, 1
  %275 = icmp eq i64 %274, %230
  br i1 %275, label %276, label %265, !llvm.loop !165

276:                                              ; preds = %260, %265, %224
  %277 = phi ptr [ %225, %224 ], [ %261, %260 ], [ %270, %265 ]
  %278 = load i64, ptr %32, align 8, !tbaa !153
  %279 = icmp eq i64 %278, 0
  br i1 %279, label %346, label %280

280:                                              ; preds = %276
  %281 = getelementptr inbounds nuw double, ptr %31, i64 %191
  %282 = load double, ptr %281, align 8, !tbaa !44
  %283 = getelementptr inbounds nuw i8, ptr %277, i64 8
  store double %282, ptr %277, align 8, !tbaa !44
  %284 = getelementptr inbounds nuw i8, ptr %281, i64 64
  %285 = load double, ptr %284, align 8, !tbaa !44
  %286 = getelementptr inbounds nuw i8, ptr %277, i64 16
  store double %285, ptr %283, align 8, !tbaa !44
  %287 = getelementptr inbounds nuw i8, ptr %281, i64 128
  %288 = load double, ptr %287, align 8, !tbaa !44
  store double %288, ptr %286, align 8, !tbaa !44
  br i1 %227, label %297, label %346

289:                                              ; preds = %217, %289
  %290 = phi ptr [ %295, %289 ], [ %186, %217 ]
  %291 = phi ptr [ %294, %289 ], [ %223, %217 ]
  %292 = getelementptr inbounds nuw double, ptr %290, i64 %191
  %293 = load double, ptr %292, align 8, !tbaa !44
  %294 = getelementptr inbounds nuw i8, ptr %291, i64 8
  store double %293, ptr %291, align 8, !tbaa !44
  %295 = getelementptr inbounds nuw i8, ptr %290, i64 64
  %296 = icmp ult ptr %295, %24
  br i1 %296, label %289, label %224, !llvm.loop !163

297:                                              ; preds = %280
  %298 = getelementptr inbounds nuw i8, ptr %277, i64 24
  %299 = trunc nuw nsw i64 %191 to i32
  br label %300

300:                                              ; preds = %297, %300
  %301 = phi i64 [ %344, %300 ], [ 0, %297 ]
  %302 = phi ptr [ %343, %300 ], [ %298, %297 ]
  %303 = mul nuw nsw i64 %301, 640
  %304 = getelementptr inbounds nuw i8, ptr %189, i64 %303
  %305 = load <8 x double>, ptr %304, align 64, !tbaa !26
  %306 = extractelement <8 x double> %305, i32 %299
  %307 = getelementptr inbounds nuw i8, ptr %302, i64 8
  store double %306, ptr %302, align 8, !tbaa !44
  %308 = getelementptr inbounds nuw i8, ptr %304, i64 64
  %309 = load <8 x double>, ptr %308, align 64, !tbaa !26
  %310 = extractelement <8 x double> %309, i32 %299
  %311 = getelementptr inbounds nuw i8, ptr %302, i64 16
  store double %310, ptr %307, align 8, !tbaa !44
  %312 = getelementptr inbounds nuw i8, ptr %304, i64 128
  %313 = load <8 x double>, ptr %312, align 64, !tbaa !26
  %314 = extractelement <8 x double> %313, i32 %299
  %315 = getelementptr inbounds nuw i8, ptr %302, i64 24
  store double %314, ptr %311, align 8, !tbaa !44
  %316 = getelementptr inbounds nuw i8, ptr %304, i64 192
  %317 = load <8 x double>, ptr %316, align 64, !tbaa !26
  %318 = extractelement <8 x double> %317, i32 %299
  %319 = getelementptr inbounds nuw i8, ptr %302, i64 32
  store double %318, ptr %315, align 8, !tbaa !44
  %320 = getelementptr inbounds nuw i8, ptr %304, i64 256
  %321 = load <8 x double>, ptr %320, align 64, !tbaa !26
  %322 = extractelement <8 x double> %321, i32 %299
  %323 = getelementptr inbounds nuw i8, ptr %302, i64 40
  store double %322, ptr %319, align 8, !tbaa !44
  %324 = getelementptr inbounds nuw i8, ptr %304, i64 320
  %325 = load <8 x double>, ptr %324, align 64, !tbaa !26
  %326 = extractelement <8 x double> %325, i32 %299
  %327 = getelementptr inbounds nuw i8, ptr %302, i64 48
  store double %326, ptr %323, align 8, !tbaa !44
  %328 = getelementptr inbounds nuw i8, ptr %304, i64 384
  %329 = load <8 x double>, ptr %328, align 64, !tbaa !26
  %330 = extractelement <8 x double> %329, i32 %299
  %331 = getelementptr inbounds nuw i8, ptr %302, i64 56
  store double %330, ptr %327, align 8, !tbaa !44
  %332 = getelementptr inbounds nuw i8, ptr %304, i64 448
  %333 = load <8 x double>, ptr %332, align 64, !tbaa !26
  %334 = extractelement <8 x double> %333, i32 %299
  %335 = getelementptr inbounds nuw i8, ptr %302, i64 64
  store double %334, ptr %331, align 8, !tbaa !44
  %336 = getelementptr inbounds nuw i8, ptr %304, i64 512
  %337 = load <8 x double>, ptr %336, align 64, !tbaa !26
  %338 = extractelement <8 x double> %337, i32 %299
  %339 = getelementptr inbounds nuw i8, ptr %302, i64 72
  store double %338, ptr %335, align 8, !tbaa !44
  %340 = getelementptr inbounds nuw i8, ptr %304, i64 576
  %341 = load <8 x double>, ptr %340, align 64, !tbaa !26
  %342 = extractelement <8 x double> %341, i32 %299
  %343 = getelementptr inbounds nuw i8, ptr %302, i64 80
  store double %342, ptr %339, align 8, !tbaa !44
  %344 = add nuw nsw i64 %301, 1
  %345 = icmp eq i64 %344, %226
  br i1 %345, label %346, label %300, !llvm.loop !160

346:                                              ; preds = %300, %280, %276, %190
  %347 = add nuw nsw i64 %191, 1
  %348 = icmp eq i64 %347, 8
  br i1 %348, label %349, label %190, !llvm.loop !164

349:                                              ; preds = %346
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !156
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %11 = getelementptr inbounds [8 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %13 = shl nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = sext i32 %14 to i64
  %16 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = sext i32 %13 to i64
  %18 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 6080
  %20 = getelementptr inbounds [8 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !44
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !166
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
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 6152
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2328
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = load ptr, ptr %36, align 8, !tbaa !167
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !168
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !169
  br label %160

42:                                               ; preds = %42, %4
  %43 = phi i64 [ 0, %4 ], [ %59, %42 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !44
  %46 = getelementptr <8 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !44
  %47 = or disjoint i64 %43, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !44
  %50 = getelementptr <8 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !44
  %51 = or disjoint i64 %43, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !44
  %54 = getelementptr <8 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !44
  %55 = or disjoint i64 %43, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !44
  %58 = getelementptr <8 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !44
  %59 = add nuw nsw i64 %43, 4
  %60 = icmp eq i64 %59, 36
  br i1 %60, label %26, label %42, !llvm.loop !170

61:                                               ; preds = %556, %26
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
  store double 0.000000e+00, ptr %72, align 8, !tbaa !44
  %73 = getelementptr i8, ptr %71, i64 320
  store double 0.000000e+00, ptr %73, align 8, !tbaa !44
  %74 = load double, ptr %66, align 8, !tbaa !44
  store double %74, ptr %71, align 8, !tbaa !44
  %75 = load double, ptr %68, align 8, !tbaa !44
  %76 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %77 = getelementptr inbounds double, ptr %76, i64 %6
  store double %75, ptr %77, align 8, !tbaa !44
  %78 = load double, ptr %70, align 8, !tbaa !44
  %79 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %80 = getelementptr inbounds double, ptr %79, i64 %6
  store double %78, ptr %80, align 8, !tbaa !44
  %81 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %82 = getelementptr inbounds double, ptr %81, i64 %6
  store double %78, ptr %82, align 8, !tbaa !44
  %83 = getelementptr double, ptr %63, i64 %6
  %84 = getelementptr i8, ptr %83, i64 256
  store double 0.000000e+00, ptr %84, align 8, !tbaa !44
  %85 = getelementptr i8, ptr %83, i64 320
  store double 0.000000e+00, ptr %85, align 8, !tbaa !44
  store double %74, ptr %83, align 8, !tbaa !44
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %87 = getelementptr inbounds double, ptr %86, i64 %6
  store double %75, ptr %87, align 8, !tbaa !44
  %88 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %89 = getelementptr inbounds double, ptr %88, i64 %6
  store double %78, ptr %89, align 8, !tbaa !44
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %91 = getelementptr inbounds double, ptr %90, i64 %6
  store double %78, ptr %91, align 8, !tbaa !44
  %92 = getelementptr double, ptr %64, i64 %6
  %93 = getelementptr i8, ptr %92, i64 256
  store double 0.000000e+00, ptr %93, align 8, !tbaa !44
  %94 = getelementptr i8, ptr %92, i64 320
  store double 0.000000e+00, ptr %94, align 8, !tbaa !44
  store double %74, ptr %92, align 8, !tbaa !44
  %95 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %96 = getelementptr inbounds double, ptr %95, i64 %6
  store double %75, ptr %96, align 8, !tbaa !44
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %98 = getelementptr inbounds double, ptr %97, i64 %6
  store double %78, ptr %98, align 8, !tbaa !44
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %100 = getelementptr inbounds double, ptr %99, i64 %6
  store double %78, ptr %100, align 8, !tbaa !44
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %102 = getelementptr inbounds double, ptr %101, i64 %6
  %103 = load double, ptr %102, align 8, !tbaa !44
  %104 = getelementptr inbounds nuw i8, ptr %0, i64 3904
  %105 = getelementptr inbounds double, ptr %104, i64 %6
  store double %103, ptr %105, align 8, !tbaa !44
  %106 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %107 = getelementptr inbounds double, ptr %106, i64 %6
  store double %103, ptr %107, align 8, !tbaa !44
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %109 = getelementptr inbounds double, ptr %108, i64 %6
  store double 1.000000e+09, ptr %109, align 8, !tbaa !44
  %110 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %111 = getelementptr inbounds double, ptr %110, i64 %6
  store double 0.000000e+00, ptr %111, align 8, !tbaa !44
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %113 = getelementptr inbounds double, ptr %112, i64 %6
  %114 = load double, ptr %113, align 8, !tbaa !44
  %115 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %116 = getelementptr inbounds double, ptr %115, i64 %6
  store double %114, ptr %116, align 8, !tbaa !44
  %117 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %118 = getelementptr inbounds double, ptr %117, i64 %6
  store double %114, ptr %118, align 8, !tbaa !44
  %119 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %120 = getelementptr inbounds double, ptr %119, i64 %6
  %121 = load double, ptr %120, align 8, !tbaa !44
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %123 = getelementptr inbounds double, ptr %122, i64 %6
  store double %121, ptr %123, align 8, !tbaa !44
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
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %136 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %137 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !44
  %138 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !44
  %139 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !44
  %140 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !44
  %141 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !44
  %142 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !44
  %143 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !44
  %144 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !44
  %145 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !44
  %146 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %146, align 8, !tbaa !44
  %147 = getelementptr inbounds double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %147, align 8, !tbaa !44
  %148 = getelementptr inbounds double, ptr %135, i64 %6
  store double 0.000000e+00, ptr %148, align 8, !tbaa !44
  %149 = getelementptr inbounds double, ptr %136, i64 %6
  store double 0.000000e+00, ptr %149, align 8, !tbaa !44
  %150 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %151 = getelementptr inbounds i64, ptr %150, i64 %6
  store i64 0, ptr %151, align 8, !tbaa !30
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %153 = getelementptr inbounds i64, ptr %152, i64 %6
  store i64 0, ptr %153, align 8, !tbaa !30
  %154 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %155 = getelementptr inbounds i64, ptr %154, i64 %6
  store i64 -1, ptr %155, align 8, !tbaa !30
  %156 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %157 = getelementptr inbounds i64, ptr %156, i64 %6
  store i64 -1, ptr %157, align 8, !tbaa !30
  %158 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %159 = getelementptr inbounds i64, ptr %158, i64 %6
  store i64 -1, ptr %159, align 8, !tbaa !30
  ret void

160:                                              ; preds = %30, %556
  %161 = phi i64 [ 0, %30 ], [ %557, %556 ]
  %162 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %161
  %163 = load i64, ptr %33, align 16, !tbaa !21
  %164 = load i64, ptr %34, align 8, !tbaa !22
  %165 = load i64, ptr %35, align 64, !tbaa !16
  %166 = mul nsw i64 %165, %3
  %167 = add nsw i64 %166, %161
  %168 = getelementptr inbounds nuw i8, ptr %162, i64 8512
  %169 = load i64, ptr %168, align 64, !tbaa !31
  %170 = mul i64 %167, 368
  %171 = getelementptr i8, ptr %37, i64 %170
  %172 = getelementptr double, ptr %162, i64 %6
  br label %202

173:                                              ; preds = %202
  %174 = icmp eq i64 %169, 0
  %175 = getelementptr inbounds i64, ptr %41, i64 %167
  %176 = load i64, ptr %175, align 8, !tbaa !30
  %177 = mul nsw i64 %163, 3
  %178 = add nsw i64 %163, 1
  %179 = select i1 %174, i64 0, i64 2
  %180 = shl i64 %178, %179
  %181 = add nsw i64 %180, %177
  %182 = mul nsw i64 %176, %181
  %183 = getelementptr inbounds double, ptr %39, i64 %182
  %184 = icmp sgt i64 %163, 0
  br i1 %184, label %185, label %226

185:                                              ; preds = %173
  %186 = getelementptr inbounds nuw i8, ptr %162, i64 8608
  %187 = load ptr, ptr %186, align 32, !tbaa !74
  %188 = getelementptr double, ptr %187, i64 %6
  %189 = getelementptr double, ptr %183, i64 %163
  %190 = getelementptr inbounds nuw i8, ptr %162, i64 8616
  %191 = load ptr, ptr %190, align 8, !tbaa !50
  %192 = getelementptr double, ptr %191, i64 %6
  %193 = shl i64 %163, 4
  %194 = getelementptr i8, ptr %183, i64 %193
  %195 = getelementptr inbounds nuw i8, ptr %162, i64 8624
  %196 = load ptr, ptr %195, align 16, !tbaa !141
  %197 = getelementptr double, ptr %196, i64 %6
  %198 = and i64 %163, 1
  %199 = icmp eq i64 %163, 1
  br i1 %199, label %213, label %200

200:                                              ; preds = %185
  %201 = and i64 %163, 9223372036854775806
  br label %241

202:                                              ; preds = %202, %160
  %203 = phi i64 [ 0, %160 ], [ %211, %202 ]
  %204 = getelementptr double, ptr %171, i64 %203
  %205 = load double, ptr %204, align 8, !tbaa !44
  %206 = getelementptr <8 x double>, ptr %172, i64 %203
  store double %205, ptr %206, align 8, !tbaa !44
  %207 = or disjoint i64 %203, 1
  %208 = getelementptr double, ptr %171, i64 %207
  %209 = load double, ptr %208, align 8, !tbaa !44
  %210 = getelementptr <8 x double>, ptr %172, i64 %207
  store double %209, ptr %210, align 8, !tbaa !44
  %211 = add nuw nsw i64 %203, 2
  %212 = icmp eq i64 %211, 46
  br i1 %212, label %173, label %202, !llvm.loop !171

213:                                              ; preds = %241, %185
  %214 = phi i64 [ 0, %185 ], [ %263, %241 ]
  %215 = icmp eq i64 %198, 0
  br i1 %215, label %226, label %216

216:                                              ; preds = %213
  %217 = getelementptr inbounds nuw double, ptr %183, i64 %214
  %218 = load double, ptr %217, align 8, !tbaa !44
  %219 = getelementptr <8 x double>, ptr %188, i64 %214
  store double %218, ptr %219, align 8, !tbaa !44
  %220 = getelementptr double, ptr %189, i64 %214
  %221 = load double, ptr %220, align 8, !tbaa !44
  %222 = getelementptr <8 x double>, ptr %192, i64 %214
  store double %221, ptr %222, align 8, !tbaa !44
  %223 = getelementptr double, ptr %194, i64 %214
  %224 = load double, ptr %223, align 8, !tbaa !44
  %225 = getelementptr <8 x double>, ptr %197, i64 %214
  store double %224, ptr %225, align 8, !tbaa !44
  br label %226

226:                                              ; preds = %216, %213, %173
  %227 = getelementptr inbounds nuw i8, ptr %162, i64 960
  %228 = getelementptr inbounds double, ptr %227, i64 %6
  %229 = load double, ptr %228, align 8, !tbaa !44
  %230 = load double, ptr %172, align 8, !tbaa !44
  %231 = icmp sgt i64 %180, 0
  br i1 %231, label %232, label %278

232:                                              ; preds = %226
  %233 = getelementptr double, ptr %183, i64 %177
  %234 = getelementptr inbounds nuw i8, ptr %162, i64 8632
  %235 = load ptr, ptr %234, align 8, !tbaa !36
  %236 = getelementptr double, ptr %235, i64 %6
  %237 = and i64 %180, 3
  %238 = icmp ult i64 %180, 4
  br i1 %238, label %266, label %239

239:                                              ; preds = %232
  %240 = and i64 %180, 9223372036854775804
  br label %287

241:                                              ; preds = %241, %200
  %242 = phi i64 [ 0, %200 ], [ %263, %241 ]
  %243 = phi i64 [ 0, %200 ], [ %264, %241 ]
  %244 = getelementptr inbounds nuw double, ptr %183, i64 %242
  %245 = load double, ptr %244, align 8, !tbaa !44
  %246 = getelementptr <8 x double>, ptr %188, i64 %242
  store double %245, ptr %246, align 8, !tbaa !44
  %247 = getelementptr double, ptr %189, i64 %242
  %248 = load double, ptr %247, align 8, !tbaa !44
  %249 = getelementptr <8 x double>, ptr %192, i64 %242
  store double %248, ptr %249, align 8, !tbaa !44
  %250 = getelementptr double, ptr %194, i64 %242
  %251 = load double, ptr %250, align 8, !tbaa !44
  %252 = getelementptr <8 x double>, ptr %197, i64 %242
  store double %251, ptr %252, align 8, !tbaa !44
  %253 = or disjoint i64 %242, 1
  %254 = getelementptr inbounds nuw double, ptr %183, i64 %253
  %255 = load double, ptr %254, align 8, !tbaa !44
  %256 = getelementptr <8 x double>, ptr %188, i64 %253
  store double %255, ptr %256, align 8, !tbaa !44
  %257 = getelementptr double, ptr %189, i64 %253
  %258 = load double, ptr %257, align 8, !tbaa !44
  %259 = getelementptr <8 x double>, ptr %192, i64 %253
  store double %258, ptr %259, align 8, !tbaa !44
  %260 = getelementptr double, ptr %194, i64 %253
  %261 = load double, ptr %260, align 8, !tbaa !44
  %262 = getelementptr <8 x double>, ptr %197, i64 %253
  store double %261, ptr %262, align 8, !tbaa !44
  %263 = add nuw nsw i64 %242, 2
  %264 = add i64 %243, 2
  %265 = icmp eq i64 %264, %201
  br i1 %265, label %213, label %241, !llvm.loop !172

266:                                              ; preds = %287, %232
  %267 = phi i64 [ 0, %232 ], [ %305, %287 ]
  %268 = icmp eq i64 %237, 0
  br i1 %268, label %278, label %269

269:                                              ; preds = %266, %269
  %270 = phi i64 [ %275, %269 ], [ %267, %266 ]
  %271 = phi i64 [ %276, %269 ], [ 0, %266 ]
  %272 = getelementptr double, ptr %233, i64 %270
  %273 = load double, ptr %272, align 8, !tbaa !44
  %274 = getelementptr <8 x double>, ptr %236, i64 %270
  store double %273, ptr %274, align 8, !tbaa !44
  %275 = add nuw nsw i64 %270, 1
  %276 = add i64 %271, 1
  %277 = icmp eq i64 %276, %237
  br i1 %277, label %278, label %269, !llvm.loop !173

278:                                              ; preds = %266, %269, %226
  %279 = icmp ne i64 %169, 0
  %280 = icmp sgt i64 %163, -1
  %281 = select i1 %279, i1 %280, i1 false
  br i1 %281, label %282, label %308

282:                                              ; preds = %278
  %283 = fdiv double 1.000000e+00, %230
  %284 = getelementptr inbounds nuw i8, ptr %162, i64 8632
  %285 = load ptr, ptr %284, align 8, !tbaa !36
  %286 = getelementptr double, ptr %285, i64 %6
  br label %444

287:                                              ; preds = %287, %239
  %288 = phi i64 [ 0, %239 ], [ %305, %287 ]
  %289 = phi i64 [ 0, %239 ], [ %306, %287 ]
  %290 = getelementptr double, ptr %233, i64 %288
  %291 = load double, ptr %290, align 8, !tbaa !44
  %292 = getelementptr <8 x double>, ptr %236, i64 %288
  store double %291, ptr %292, align 8, !tbaa !44
  %293 = or disjoint i64 %288, 1
  %294 = getelementptr double, ptr %233, i64 %293
  %295 = load double, ptr %294, align 8, !tbaa !44
  %296 = getelementptr <8 x double>, ptr %236, i64 %293
  store double %295, ptr %296, align 8, !tbaa !44
  %297 = or disjoint i64 %288, 2
  %298 = getelementptr double, ptr %233, i64 %297
  %299 = load double, ptr %298, align 8, !tbaa !44
  %300 = getelementptr <8 x double>, ptr %236, i64 %297
  store double %299, ptr %300, align 8, !tbaa !44
  %301 = or disjoint i64 %288, 3
  %302 = getelementptr double, ptr %233, i64 %301
  %303 = load double, ptr %302, align 8, !tbaa !44
  %304 = getelementptr <8 x double>, ptr %236, i64 %301
  store double %303, ptr %304, align 8, !tbaa !44
  %305 = add nuw nsw i64 %288, 4
  %306 = add i64 %289, 4
  %307 = icmp eq i64 %306, %240
  br i1 %307, label %266, label %287, !llvm.loop !174

308:                                              ; preds = %444, %278
  %309 = getelementptr inbounds nuw i8, ptr %162, i64 2560
  %310 = getelementptr inbounds double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !44
  %312 = getelementptr inbounds nuw i8, ptr %162, i64 2624
  %313 = getelementptr inbounds double, ptr %312, i64 %6
  %314 = load double, ptr %313, align 8, !tbaa !44
  %315 = getelementptr inbounds nuw i8, ptr %162, i64 2688
  %316 = getelementptr inbounds double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !44
  %318 = getelementptr inbounds nuw i8, ptr %162, i64 2752
  %319 = getelementptr inbounds double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !44
  %321 = tail call double @llvm.fmuladd.f64(double %230, double %320, double %317)
  %322 = tail call double @llvm.fmuladd.f64(double %230, double %321, double %314)
  %323 = tail call double @llvm.fmuladd.f64(double %230, double %322, double %311)
  %324 = getelementptr inbounds nuw i8, ptr %162, i64 832
  %325 = getelementptr inbounds double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !44
  %327 = getelementptr inbounds nuw i8, ptr %162, i64 1408
  %328 = getelementptr inbounds double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !44
  %330 = getelementptr inbounds nuw i8, ptr %162, i64 1536
  %331 = getelementptr inbounds double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !44
  %333 = fsub double %329, %332
  %334 = fmul double %326, %333
  %335 = getelementptr inbounds nuw i8, ptr %162, i64 2944
  %336 = getelementptr inbounds nuw i8, ptr %162, i64 3840
  %337 = getelementptr inbounds nuw i8, ptr %162, i64 4736
  %338 = getelementptr inbounds nuw i8, ptr %162, i64 896
  %339 = getelementptr inbounds double, ptr %338, i64 %6
  %340 = getelementptr inbounds nuw i8, ptr %162, i64 1024
  %341 = getelementptr inbounds double, ptr %340, i64 %6
  %342 = getelementptr double, ptr %335, i64 %6
  %343 = getelementptr i8, ptr %342, i64 320
  store double 0.000000e+00, ptr %343, align 8, !tbaa !44
  %344 = getelementptr i8, ptr %342, i64 384
  store double 0.000000e+00, ptr %344, align 8, !tbaa !44
  %345 = getelementptr i8, ptr %342, i64 448
  store double 0.000000e+00, ptr %345, align 8, !tbaa !44
  %346 = getelementptr i8, ptr %342, i64 512
  store double 0.000000e+00, ptr %346, align 8, !tbaa !44
  %347 = getelementptr i8, ptr %342, i64 576
  store double 0.000000e+00, ptr %347, align 8, !tbaa !44
  %348 = getelementptr i8, ptr %342, i64 704
  store double 0.000000e+00, ptr %348, align 8, !tbaa !44
  %349 = getelementptr i8, ptr %342, i64 768
  store double 0.000000e+00, ptr %349, align 8, !tbaa !44
  store double %230, ptr %342, align 8, !tbaa !44
  %350 = getelementptr inbounds nuw i8, ptr %162, i64 3008
  %351 = getelementptr inbounds double, ptr %350, i64 %6
  store double %329, ptr %351, align 8, !tbaa !44
  %352 = load double, ptr %339, align 8, !tbaa !44
  %353 = getelementptr inbounds nuw i8, ptr %162, i64 3072
  %354 = getelementptr inbounds double, ptr %353, i64 %6
  store double %352, ptr %354, align 8, !tbaa !44
  %355 = getelementptr inbounds nuw i8, ptr %162, i64 3136
  %356 = getelementptr inbounds double, ptr %355, i64 %6
  store double %334, ptr %356, align 8, !tbaa !44
  %357 = getelementptr inbounds nuw i8, ptr %162, i64 3584
  %358 = getelementptr inbounds double, ptr %357, i64 %6
  store double %229, ptr %358, align 8, !tbaa !44
  %359 = load double, ptr %341, align 8, !tbaa !44
  %360 = getelementptr inbounds nuw i8, ptr %162, i64 3200
  %361 = getelementptr inbounds double, ptr %360, i64 %6
  store double %359, ptr %361, align 8, !tbaa !44
  %362 = getelementptr inbounds nuw i8, ptr %162, i64 3776
  %363 = getelementptr inbounds double, ptr %362, i64 %6
  store double %323, ptr %363, align 8, !tbaa !44
  %364 = getelementptr double, ptr %336, i64 %6
  %365 = getelementptr i8, ptr %364, i64 320
  store double 0.000000e+00, ptr %365, align 8, !tbaa !44
  %366 = getelementptr i8, ptr %364, i64 384
  store double 0.000000e+00, ptr %366, align 8, !tbaa !44
  %367 = getelementptr i8, ptr %364, i64 448
  store double 0.000000e+00, ptr %367, align 8, !tbaa !44
  %368 = getelementptr i8, ptr %364, i64 512
  store double 0.000000e+00, ptr %368, align 8, !tbaa !44
  %369 = getelementptr i8, ptr %364, i64 576
  store double 0.000000e+00, ptr %369, align 8, !tbaa !44
  %370 = getelementptr i8, ptr %364, i64 704
  store double 0.000000e+00, ptr %370, align 8, !tbaa !44
  %371 = getelementptr i8, ptr %364, i64 768
  store double 0.000000e+00, ptr %371, align 8, !tbaa !44
  store double %230, ptr %364, align 8, !tbaa !44
  %372 = getelementptr inbounds nuw i8, ptr %162, i64 3904
  %373 = getelementptr inbounds double, ptr %372, i64 %6
  store double %329, ptr %373, align 8, !tbaa !44
  %374 = getelementptr inbounds nuw i8, ptr %162, i64 3968
  %375 = getelementptr inbounds double, ptr %374, i64 %6
  store double %352, ptr %375, align 8, !tbaa !44
  %376 = getelementptr inbounds nuw i8, ptr %162, i64 4032
  %377 = getelementptr inbounds double, ptr %376, i64 %6
  store double %334, ptr %377, align 8, !tbaa !44
  %378 = getelementptr inbounds nuw i8, ptr %162, i64 4480
  %379 = getelementptr inbounds double, ptr %378, i64 %6
  store double %229, ptr %379, align 8, !tbaa !44
  %380 = getelementptr inbounds nuw i8, ptr %162, i64 4096
  %381 = getelementptr inbounds double, ptr %380, i64 %6
  store double %359, ptr %381, align 8, !tbaa !44
  %382 = getelementptr inbounds nuw i8, ptr %162, i64 4672
  %383 = getelementptr inbounds double, ptr %382, i64 %6
  store double %323, ptr %383, align 8, !tbaa !44
  %384 = getelementptr double, ptr %337, i64 %6
  %385 = getelementptr i8, ptr %384, i64 320
  store double 0.000000e+00, ptr %385, align 8, !tbaa !44
  %386 = getelementptr i8, ptr %384, i64 384
  store double 0.000000e+00, ptr %386, align 8, !tbaa !44
  %387 = getelementptr i8, ptr %384, i64 448
  store double 0.000000e+00, ptr %387, align 8, !tbaa !44
  %388 = getelementptr i8, ptr %384, i64 512
  store double 0.000000e+00, ptr %388, align 8, !tbaa !44
  %389 = getelementptr i8, ptr %384, i64 576
  store double 0.000000e+00, ptr %389, align 8, !tbaa !44
  %390 = getelementptr i8, ptr %384, i64 704
  store double 0.000000e+00, ptr %390, align 8, !tbaa !44
  %391 = getelementptr i8, ptr %384, i64 768
  store double 0.000000e+00, ptr %391, align 8, !tbaa !44
  store double %230, ptr %384, align 8, !tbaa !44
  %392 = load double, ptr %328, align 8, !tbaa !44
  %393 = getelementptr inbounds nuw i8, ptr %162, i64 4800
  %394 = getelementptr inbounds double, ptr %393, i64 %6
  store double %392, ptr %394, align 8, !tbaa !44
  %395 = getelementptr inbounds nuw i8, ptr %162, i64 4864
  %396 = getelementptr inbounds double, ptr %395, i64 %6
  store double %352, ptr %396, align 8, !tbaa !44
  %397 = getelementptr inbounds nuw i8, ptr %162, i64 4928
  %398 = getelementptr inbounds double, ptr %397, i64 %6
  store double %334, ptr %398, align 8, !tbaa !44
  %399 = getelementptr inbounds nuw i8, ptr %162, i64 5376
  %400 = getelementptr inbounds double, ptr %399, i64 %6
  store double %229, ptr %400, align 8, !tbaa !44
  %401 = getelementptr inbounds nuw i8, ptr %162, i64 4992
  %402 = getelementptr inbounds double, ptr %401, i64 %6
  store double %359, ptr %402, align 8, !tbaa !44
  %403 = getelementptr inbounds nuw i8, ptr %162, i64 5568
  %404 = getelementptr inbounds double, ptr %403, i64 %6
  store double %323, ptr %404, align 8, !tbaa !44
  %405 = load double, ptr %339, align 8, !tbaa !44
  %406 = fadd double %334, %405
  %407 = getelementptr inbounds nuw i8, ptr %162, i64 1600
  %408 = getelementptr inbounds double, ptr %407, i64 %6
  store double %406, ptr %408, align 8, !tbaa !44
  %409 = fcmp ogt double %405, 0.000000e+00
  %410 = fdiv double 1.000000e+00, %405
  %411 = select i1 %409, double %410, double 0.000000e+00
  %412 = getelementptr inbounds nuw i8, ptr %162, i64 7744
  %413 = getelementptr inbounds double, ptr %412, i64 %6
  store double %411, ptr %413, align 8, !tbaa !44
  %414 = getelementptr inbounds nuw i8, ptr %162, i64 704
  %415 = getelementptr inbounds double, ptr %414, i64 %6
  %416 = load double, ptr %415, align 8, !tbaa !44
  %417 = fdiv double 1.000000e+00, %416
  %418 = getelementptr inbounds nuw i8, ptr %162, i64 7808
  %419 = getelementptr inbounds double, ptr %418, i64 %6
  store double %417, ptr %419, align 8, !tbaa !44
  %420 = getelementptr inbounds nuw i8, ptr %162, i64 5952
  %421 = getelementptr inbounds nuw i8, ptr %162, i64 6784
  %422 = getelementptr inbounds nuw i8, ptr %162, i64 6848
  %423 = getelementptr inbounds nuw i8, ptr %162, i64 7616
  %424 = getelementptr inbounds double, ptr %420, i64 %6
  store double %229, ptr %424, align 8, !tbaa !44
  %425 = getelementptr inbounds double, ptr %421, i64 %6
  store double %229, ptr %425, align 8, !tbaa !44
  %426 = getelementptr inbounds double, ptr %422, i64 %6
  store double %229, ptr %426, align 8, !tbaa !44
  %427 = getelementptr inbounds double, ptr %423, i64 %6
  store double %229, ptr %427, align 8, !tbaa !44
  %428 = getelementptr inbounds nuw i8, ptr %162, i64 6016
  %429 = getelementptr inbounds nuw i8, ptr %162, i64 6080
  %430 = getelementptr inbounds nuw i8, ptr %162, i64 7680
  %431 = getelementptr inbounds nuw i8, ptr %162, i64 7552
  %432 = getelementptr inbounds nuw i8, ptr %162, i64 7232
  %433 = getelementptr inbounds double, ptr %428, i64 %6
  store double 0.000000e+00, ptr %433, align 8, !tbaa !44
  %434 = getelementptr inbounds double, ptr %429, i64 %6
  store double 0.000000e+00, ptr %434, align 8, !tbaa !44
  %435 = getelementptr inbounds double, ptr %430, i64 %6
  store double 0.000000e+00, ptr %435, align 8, !tbaa !44
  %436 = getelementptr inbounds double, ptr %431, i64 %6
  store double 0.000000e+00, ptr %436, align 8, !tbaa !44
  %437 = getelementptr inbounds double, ptr %432, i64 %6
  store double 0.000000e+00, ptr %437, align 8, !tbaa !44
  %438 = getelementptr inbounds nuw i8, ptr %162, i64 8320
  %439 = getelementptr inbounds i64, ptr %438, i64 %6
  store i64 0, ptr %439, align 8, !tbaa !30
  %440 = getelementptr inbounds nuw i8, ptr %162, i64 8384
  %441 = getelementptr inbounds i64, ptr %440, i64 %6
  store i64 -1, ptr %441, align 8, !tbaa !30
  %442 = getelementptr inbounds nuw i8, ptr %162, i64 8448
  %443 = getelementptr inbounds i64, ptr %442, i64 %6
  store i64 0, ptr %443, align 8, !tbaa !30
  br i1 %184, label %466, label %482

444:                                              ; preds = %282, %444
  %445 = phi i64 [ 0, %282 ], [ %464, %444 ]
  %446 = icmp slt i64 %445, %169
  %447 = select i1 %446, double %283, double 1.000000e+00
  %448 = shl i64 %445, 8
  %449 = getelementptr i8, ptr %286, i64 %448
  %450 = load double, ptr %449, align 8, !tbaa !44
  %451 = fmul double %447, %450
  store double %451, ptr %449, align 8, !tbaa !44
  %452 = fdiv double %447, %230
  %453 = getelementptr i8, ptr %449, i64 64
  %454 = load double, ptr %453, align 8, !tbaa !44
  %455 = fmul double %452, %454
  store double %455, ptr %453, align 8, !tbaa !44
  %456 = fdiv double %452, %230
  %457 = getelementptr i8, ptr %449, i64 128
  %458 = load double, ptr %457, align 8, !tbaa !44
  %459 = fmul double %456, %458
  store double %459, ptr %457, align 8, !tbaa !44
  %460 = fdiv double %456, %230
  %461 = getelementptr i8, ptr %449, i64 192
  %462 = load double, ptr %461, align 8, !tbaa !44
  %463 = fmul double %460, %462
  store double %463, ptr %461, align 8, !tbaa !44
  %464 = add nuw nsw i64 %445, 1
  %465 = icmp slt i64 %445, %163
  br i1 %465, label %444, label %308, !llvm.loop !175

466:                                              ; preds = %308
  %467 = getelementptr inbounds nuw i8, ptr %162, i64 8536
  %468 = load ptr, ptr %467, align 8, !tbaa !58
  %469 = getelementptr double, ptr %468, i64 %6
  %470 = getelementptr inbounds nuw i8, ptr %162, i64 8528
  %471 = load ptr, ptr %470, align 16, !tbaa !48
  %472 = getelementptr double, ptr %471, i64 %6
  %473 = getelementptr inbounds nuw i8, ptr %162, i64 8520
  %474 = load ptr, ptr %473, align 8, !tbaa !59
  %475 = getelementptr double, ptr %474, i64 %6
  %476 = getelementptr inbounds nuw i8, ptr %162, i64 8560
  %477 = load ptr, ptr %476, align 16, !tbaa !49
  %478 = getelementptr double, ptr %477, i64 %6
  %479 = getelementptr inbounds nuw i8, ptr %162, i64 8552
  %480 = load ptr, ptr %479, align 8, !tbaa !69
  %481 = getelementptr double, ptr %480, i64 %6
  br label %495

482:                                              ; preds = %495, %308
  %483 = icmp slt i64 %164, 0
  br i1 %483, label %556, label %484

484:                                              ; preds = %482
  %485 = getelementptr inbounds nuw i8, ptr %162, i64 8704
  %486 = load ptr, ptr %485, align 64, !tbaa !61
  %487 = getelementptr double, ptr %486, i64 %6
  %488 = getelementptr inbounds nuw i8, ptr %162, i64 8696
  %489 = load ptr, ptr %488, align 8, !tbaa !51
  %490 = getelementptr double, ptr %489, i64 %6
  %491 = icmp eq i64 %164, 0
  br i1 %491, label %504, label %492

492:                                              ; preds = %484
  %493 = add nuw i64 %164, 1
  %494 = and i64 %493, -2
  br label %529

495:                                              ; preds = %466, %495
  %496 = phi i64 [ 0, %466 ], [ %502, %495 ]
  %497 = getelementptr <8 x double>, ptr %469, i64 %496
  store double %229, ptr %497, align 8, !tbaa !44
  %498 = getelementptr <8 x double>, ptr %472, i64 %496
  store double %229, ptr %498, align 8, !tbaa !44
  %499 = getelementptr <8 x double>, ptr %475, i64 %496
  store double %229, ptr %499, align 8, !tbaa !44
  %500 = getelementptr <8 x double>, ptr %478, i64 %496
  store double 1.000000e+00, ptr %500, align 8, !tbaa !44
  %501 = getelementptr <8 x double>, ptr %481, i64 %496
  store double 1.000000e+00, ptr %501, align 8, !tbaa !44
  %502 = add nuw nsw i64 %496, 1
  %503 = icmp eq i64 %502, %163
  br i1 %503, label %482, label %495, !llvm.loop !176

504:                                              ; preds = %543, %484
  %505 = phi i64 [ 0, %484 ], [ %547, %543 ]
  %506 = and i64 %164, 1
  %507 = icmp eq i64 %506, 0
  br i1 %507, label %508, label %516

508:                                              ; preds = %504
  %509 = icmp slt i64 %505, %164
  br i1 %509, label %512, label %510

510:                                              ; preds = %508
  %511 = load double, ptr %328, align 8, !tbaa !44
  br label %512

512:                                              ; preds = %510, %508
  %513 = phi double [ %511, %510 ], [ %323, %508 ]
  %514 = getelementptr <8 x double>, ptr %487, i64 %505
  store double %513, ptr %514, align 8, !tbaa !44
  %515 = getelementptr <8 x double>, ptr %490, i64 %505
  store double %513, ptr %515, align 8, !tbaa !44
  br label %516

516:                                              ; preds = %504, %512
  %517 = icmp eq i64 %164, 0
  br i1 %517, label %556, label %518

518:                                              ; preds = %516
  %519 = getelementptr inbounds nuw i8, ptr %162, i64 8656
  %520 = load ptr, ptr %519, align 16, !tbaa !63
  %521 = getelementptr double, ptr %520, i64 %6
  %522 = getelementptr inbounds nuw i8, ptr %162, i64 8648
  %523 = load ptr, ptr %522, align 8, !tbaa !52
  %524 = getelementptr double, ptr %523, i64 %6
  %525 = and i64 %164, 1
  %526 = icmp eq i64 %164, 1
  br i1 %526, label %550, label %527

527:                                              ; preds = %518
  %528 = and i64 %164, 9223372036854775806
  br label %560

529:                                              ; preds = %543, %492
  %530 = phi i64 [ 0, %492 ], [ %547, %543 ]
  %531 = phi i64 [ 0, %492 ], [ %548, %543 ]
  %532 = icmp slt i64 %530, %164
  br i1 %532, label %535, label %533

533:                                              ; preds = %529
  %534 = load double, ptr %328, align 8, !tbaa !44
  br label %535

535:                                              ; preds = %529, %533
  %536 = phi double [ %534, %533 ], [ %323, %529 ]
  %537 = getelementptr <8 x double>, ptr %487, i64 %530
  store double %536, ptr %537, align 8, !tbaa !44
  %538 = getelementptr <8 x double>, ptr %490, i64 %530
  store double %536, ptr %538, align 8, !tbaa !44
  %539 = or disjoint i64 %530, 1
  %540 = icmp slt i64 %539, %164
  br i1 %540, label %543, label %541

541:                                              ; preds = %535
  %542 = load double, ptr %328, align 8, !tbaa !44
  br label %543

543:                                              ; preds = %541, %535
  %544 = phi double [ %542, %541 ], [ %323, %535 ]
  %545 = getelementptr <8 x double>, ptr %487, i64 %539
  store double %544, ptr %545, align 8, !tbaa !44
  %546 = getelementptr <8 x double>, ptr %490, i64 %539
  store double %544, ptr %546, align 8, !tbaa !44
  %547 = add nuw i64 %530, 2
  %548 = add i64 %531, 2
  %549 = icmp eq i64 %548, %494
  br i1 %549, label %504, label %529, !llvm.loop !177

550:                                              ; preds = %560, %518
  %551 = phi i64 [ 0, %518 ], [ %568, %560 ]
  %552 = icmp eq i64 %525, 0
  br i1 %552, label %556, label %553

553:                                              ; preds = %550
  %554 = getelementptr <8 x double>, ptr %521, i64 %551
  store double %229, ptr %554, align 8, !tbaa !44
  %555 = getelementptr <8 x double>, ptr %524, i64 %551
  store double %229, ptr %555, align 8, !tbaa !44
  br label %556

556:                                              ; preds = %553, %550, %482, %516
  %557 = add nuw nsw i64 %161, 1
  %558 = load i64, ptr %27, align 8, !tbaa !20
  %559 = icmp slt i64 %557, %558
  br i1 %559, label %160, label %61, !llvm.loop !178

560:                                              ; preds = %560, %527
  %561 = phi i64 [ 0, %527 ], [ %568, %560 ]
  %562 = phi i64 [ 0, %527 ], [ %569, %560 ]
  %563 = getelementptr <8 x double>, ptr %521, i64 %561
  store double %229, ptr %563, align 8, !tbaa !44
  %564 = getelementptr <8 x double>, ptr %524, i64 %561
  store double %229, ptr %564, align 8, !tbaa !44
  %565 = or disjoint i64 %561, 1
  %566 = getelementptr <8 x double>, ptr %521, i64 %565
  store double %229, ptr %566, align 8, !tbaa !44
  %567 = getelementptr <8 x double>, ptr %524, i64 %565
  store double %229, ptr %567, align 8, !tbaa !44
  %568 = add nuw nsw i64 %561, 2
  %569 = add i64 %562, 2
  %570 = icmp eq i64 %569, %528
  br i1 %570, label %550, label %560, !llvm.loop !179
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !180
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !181
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !44
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !182
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !44
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !44
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
  %40 = load double, ptr %39, align 8, !tbaa !44
  %41 = getelementptr inbounds nuw i8, ptr %39, i64 40
  %42 = load double, ptr %41, align 8, !tbaa !44
  %43 = fcmp ult double %42, 0.000000e+00
  br i1 %43, label %49, label %44

44:                                               ; preds = %36
  %45 = load double, ptr %35, align 8, !tbaa !44
  %46 = fsub double %42, %45
  %47 = fcmp ogt double %46, 0x3EB0C6F7A0B5ED8D
  %48 = select i1 %47, double %46, double 0.000000e+00
  br label %49

49:                                               ; preds = %44, %36
  %50 = phi double [ %48, %44 ], [ %40, %36 ]
  %51 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %52 = load double, ptr %51, align 8, !tbaa !44
  %53 = fcmp oeq double %52, 2.000000e+00
  br i1 %53, label %54, label %62

54:                                               ; preds = %49
  %55 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %56 = load double, ptr %55, align 8, !tbaa !44
  %57 = fcmp oeq double %56, 4.000000e+00
  br i1 %57, label %58, label %62

58:                                               ; preds = %54
  %59 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %60 = load double, ptr %59, align 8, !tbaa !44
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
  br i1 %68, label %69, label %36, !llvm.loop !183

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !44
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !44
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !44
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6080
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !44
  br label %270

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !44
  %82 = load double, ptr %35, align 8, !tbaa !44
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !44
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !44
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !44
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !44
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !44
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !44
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !44
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !44
  %99 = load double, ptr %80, align 8, !tbaa !44
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !44
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %201

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %152

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
  br i1 %138, label %139, label %117, !llvm.loop !184

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
  %154 = extractelement <8 x double> %153, i32 %2
  %155 = fmul double %154, 4.615260e+02
  %156 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %157 = getelementptr inbounds double, ptr %156, i64 %10
  %158 = load double, ptr %157, align 8, !tbaa !44
  %159 = fmul double %158, %155
  %160 = fdiv double %159, %30
  %161 = fcmp ogt double %160, 0.000000e+00
  %162 = fneg double %160
  %163 = select i1 %161, double %162, double -0.000000e+00
  %164 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %165 = getelementptr inbounds double, ptr %164, i64 %10
  %166 = load double, ptr %165, align 8, !tbaa !44
  %167 = fdiv double %163, %166
  %168 = insertelement <8 x double> poison, double %167, i64 0
  %169 = shufflevector <8 x double> %168, <8 x double> poison, <8 x i32> zeroinitializer
  %170 = fcmp ogt <8 x double> %169, splat (double -7.000000e+02)
  %171 = select <8 x i1> %170, <8 x double> %169, <8 x double> splat (double -7.000000e+02)
  %172 = fcmp olt <8 x double> %171, splat (double 7.000000e+02)
  %173 = select <8 x i1> %172, <8 x double> %171, <8 x double> splat (double 7.000000e+02)
  %174 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %173, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %175 = fadd <8 x double> %174, splat (double 0xC338000000000000)
  %176 = fneg <8 x double> %175
  %177 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %176, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %173)
  %178 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %176, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %177)
  %179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %178, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %179, <8 x double> %178, <8 x double> splat (double 0x3E5AE64567F544E4))
  %181 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %180, <8 x double> %178, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %182 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %181, <8 x double> %178, <8 x double> splat (double 0x3EC71DE3A556C734))
  %183 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %182, <8 x double> %178, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %184 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %183, <8 x double> %178, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %185 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %184, <8 x double> %178, <8 x double> splat (double 0x3F56C16C16C16C17))
  %186 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %185, <8 x double> %178, <8 x double> splat (double 0x3F81111111111111))
  %187 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %186, <8 x double> %178, <8 x double> splat (double 0x3FA5555555555555))
  %188 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %187, <8 x double> %178, <8 x double> splat (double 0x3FC5555555555555))
  %189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %188, <8 x double> %178, <8 x double> splat (double 5.000000e-01))
  %190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %189, <8 x double> %178, <8 x double> splat (double 1.000000e+00))
  %191 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %190, <8 x double> %178, <8 x double> splat (double 1.000000e+00))
  %192 = bitcast <8 x double> %174 to <8 x i64>
  %193 = shl <8 x i64> %192, splat (i64 52)
  %194 = bitcast <8 x double> %191 to <8 x i64>
  %195 = add <8 x i64> %193, %194
  %196 = bitcast <8 x i64> %195 to <8 x double>
  %197 = extractelement <8 x double> %196, i64 0
  %198 = fmul double %30, %197
  %199 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %200 = getelementptr inbounds double, ptr %199, i64 %10
  store double %198, ptr %200, align 8, !tbaa !44
  br label %201

201:                                              ; preds = %79, %152
  %202 = fcmp une double %99, %103
  br i1 %202, label %203, label %242

203:                                              ; preds = %201
  %204 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %205 = getelementptr inbounds double, ptr %204, i64 %10
  store double %99, ptr %205, align 8, !tbaa !44
  %206 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %207 = getelementptr inbounds double, ptr %206, i64 %10
  store double %82, ptr %207, align 8, !tbaa !44
  %208 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %209 = getelementptr inbounds double, ptr %208, i64 %10
  %210 = load double, ptr %209, align 8, !tbaa !44
  %211 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %212 = getelementptr inbounds double, ptr %211, i64 %10
  store double %210, ptr %212, align 8, !tbaa !44
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %214 = getelementptr inbounds i64, ptr %213, i64 %10
  store i64 -1, ptr %214, align 8, !tbaa !30
  %215 = fcmp oeq double %99, 0.000000e+00
  %216 = fcmp oeq double %99, 3.000000e+00
  %217 = or i1 %215, %216
  br i1 %217, label %218, label %226

218:                                              ; preds = %203
  %219 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %220 = getelementptr inbounds double, ptr %219, i64 %10
  store double %30, ptr %220, align 8, !tbaa !44
  store double %30, ptr %26, align 8, !tbaa !44
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %222 = getelementptr inbounds double, ptr %221, i64 %10
  %223 = load double, ptr %222, align 8, !tbaa !44
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %225 = getelementptr inbounds double, ptr %224, i64 %10
  store double %223, ptr %225, align 8, !tbaa !44
  br label %226

226:                                              ; preds = %203, %218
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %228 = load i64, ptr %227, align 8, !tbaa !20
  %229 = icmp sgt i64 %228, 0
  br i1 %229, label %230, label %242

230:                                              ; preds = %226
  %231 = getelementptr inbounds nuw i8, ptr %0, i64 6152
  %232 = load ptr, ptr %231, align 8, !tbaa !28
  %233 = getelementptr i64, ptr %232, i64 %10
  %234 = sext i1 %216 to i64
  br label %235

235:                                              ; preds = %230, %235
  %236 = phi i64 [ 0, %230 ], [ %239, %235 ]
  %237 = getelementptr %struct.Piece, ptr %233, i64 %236, i32 42
  store i64 -1, ptr %237, align 8, !tbaa !30
  %238 = getelementptr %struct.Piece, ptr %233, i64 %236, i32 43
  store i64 %234, ptr %238, align 8, !tbaa !30
  %239 = add nuw nsw i64 %236, 1
  %240 = load i64, ptr %227, align 8, !tbaa !20
  %241 = icmp slt i64 %239, %240
  br i1 %241, label %235, label %242, !llvm.loop !185

242:                                              ; preds = %235, %226, %201
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %243 = getelementptr inbounds i64, ptr %4, i64 %10
  store i64 -1, ptr %243, align 8, !tbaa !30
  %244 = load <8 x i64>, ptr %4, align 64, !tbaa !26
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %246 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %247 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %248 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %249 = fmul <8 x double> %248, splat (double 5.000000e-01)
  %250 = load <8 x double>, ptr %89, align 64, !tbaa !26
  %251 = fadd <8 x double> %250, %249
  %252 = fadd <8 x double> %251, splat (double -4.000000e-03)
  %253 = fcmp ult <8 x double> %246, %252
  %254 = fsub <8 x double> %250, %249
  %255 = fadd <8 x double> %254, splat (double 4.000000e-03)
  %256 = fcmp ole <8 x double> %246, %255
  %257 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %258 = load <8 x i64>, ptr %257, align 64, !tbaa !26
  %259 = select <8 x i1> %256, <8 x i64> splat (i64 -1), <8 x i64> %258
  %260 = select <8 x i1> %253, <8 x i64> %259, <8 x i64> zeroinitializer
  %261 = xor <8 x i64> %260, %258
  %262 = and <8 x i64> %261, %244
  %263 = and <8 x i64> %260, %244
  %264 = xor <8 x i64> %244, splat (i64 -1)
  %265 = and <8 x i64> %258, %264
  %266 = or <8 x i64> %263, %265
  store <8 x i64> %266, ptr %257, align 64, !tbaa !26
  %267 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %268 = load <8 x i64>, ptr %267, align 64, !tbaa !26
  %269 = or <8 x i64> %262, %268
  store <8 x i64> %269, ptr %267, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #7
  br label %270

270:                                              ; preds = %242, %69
  ret void
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fmuladd.v8f64(<8 x double>, <8 x double>, <8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.vector.reduce.or.v8i64(<8 x i64>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fabs.v8f64(<8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.sqrt.v8f64(<8 x double>) #4

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
!14 = !{!5, !6, i64 8}
!15 = !{!5, !6, i64 48}
!16 = !{!17, !6, i64 2304}
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2304, !6, i64 2312, !6, i64 2320, !6, i64 2328, !6, i64 2336, !6, i64 2344, !7, i64 2368, !7, i64 2432, !7, i64 2816, !7, i64 3200, !7, i64 3584, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 6016, !7, i64 6080, !11, i64 6144, !19, i64 6152}
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
!28 = !{!17, !19, i64 6152}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 8512}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3840, !7, i64 4736, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !7, i64 7552, !7, i64 7616, !7, i64 7680, !7, i64 7744, !7, i64 7808, !34, i64 7872, !7, i64 8256, !7, i64 8320, !7, i64 8384, !7, i64 8448, !6, i64 8512, !11, i64 8520, !11, i64 8528, !11, i64 8536, !11, i64 8544, !11, i64 8552, !11, i64 8560, !11, i64 8568, !11, i64 8576, !11, i64 8584, !11, i64 8592, !11, i64 8600, !11, i64 8608, !11, i64 8616, !11, i64 8624, !11, i64 8632, !11, i64 8640, !11, i64 8648, !11, i64 8656, !11, i64 8664, !11, i64 8672, !11, i64 8680, !11, i64 8688, !11, i64 8696, !11, i64 8704}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320}
!35 = !{!11, !11, i64 0}
!36 = !{!32, !11, i64 8632}
!37 = distinct !{!37, !38}
!38 = !{!"llvm.loop.mustprogress"}
!39 = !{!17, !11, i64 6144}
!40 = !{!5, !6, i64 0}
!41 = distinct !{!41, !38}
!42 = !{!5, !6, i64 176}
!43 = !{!5, !6, i64 184}
!44 = !{!9, !9, i64 0}
!45 = !{!5, !10, i64 208}
!46 = !{!5, !10, i64 192}
!47 = !{!5, !10, i64 200}
!48 = !{!32, !11, i64 8528}
!49 = !{!32, !11, i64 8560}
!50 = !{!32, !11, i64 8616}
!51 = !{!32, !11, i64 8696}
!52 = !{!32, !11, i64 8648}
!53 = distinct !{!53, !38}
!54 = distinct !{!54, !38}
!55 = distinct !{!55, !38}
!56 = distinct !{!56, !38}
!57 = distinct !{!57, !38}
!58 = !{!32, !11, i64 8536}
!59 = !{!32, !11, i64 8520}
!60 = !{!32, !11, i64 8544}
!61 = !{!32, !11, i64 8704}
!62 = distinct !{!62, !38}
!63 = !{!32, !11, i64 8656}
!64 = !{!32, !11, i64 8664}
!65 = distinct !{!65, !38}
!66 = !{!67}
!67 = distinct !{!67, !68, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!68 = distinct !{!68, !"_ZL4stirRK5GroupRK5Piece"}
!69 = !{!32, !11, i64 8552}
!70 = distinct !{!70, !38}
!71 = !{!72}
!72 = distinct !{!72, !73, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!73 = distinct !{!73, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!74 = !{!32, !11, i64 8608}
!75 = distinct !{!75, !38}
!76 = distinct !{!76, !38}
!77 = distinct !{!77, !38}
!78 = distinct !{!78, !38}
!79 = distinct !{!79, !38}
!80 = distinct !{!80, !38}
!81 = distinct !{!81, !38}
!82 = !{!83}
!83 = distinct !{!83, !84, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!84 = distinct !{!84, !"_ZL4stirRK5GroupRK5Piece"}
!85 = !{!32, !11, i64 8584}
!86 = !{!32, !11, i64 8592}
!87 = !{!32, !11, i64 8600}
!88 = !{!32, !11, i64 8568}
!89 = !{!32, !11, i64 8576}
!90 = distinct !{!90, !38}
!91 = distinct !{!91, !38}
!92 = !{!32, !11, i64 8688}
!93 = distinct !{!93, !38}
!94 = !{!32, !11, i64 8672}
!95 = !{!32, !11, i64 8680}
!96 = distinct !{!96, !38}
!97 = distinct !{!97, !38}
!98 = distinct !{!98, !38}
!99 = distinct !{!99, !38}
!100 = !{!101}
!101 = distinct !{!101, !102, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!102 = distinct !{!102, !"_ZL9evaporateR5GroupDv8_d"}
!103 = !{!104, !101}
!104 = distinct !{!104, !105, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!105 = distinct !{!105, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!106 = !{!107, !104, !101}
!107 = distinct !{!107, !108, !"_ZL11look_insideRK5GroupRK5PieceDv8_d: argument 0"}
!108 = distinct !{!108, !"_ZL11look_insideRK5GroupRK5PieceDv8_d"}
!109 = distinct !{!109, !38}
!110 = distinct !{!110, !38}
!111 = !{!112}
!112 = distinct !{!112, !113, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!113 = distinct !{!113, !"_ZL7outflowRK5GroupDv8_dS2_"}
!114 = !{!115}
!115 = distinct !{!115, !116, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!116 = distinct !{!116, !"_ZL8condenseR5GroupDv8_d"}
!117 = distinct !{!117, !38}
!118 = !{!119}
!119 = distinct !{!119, !120, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!120 = distinct !{!120, !"_ZL9evaporateR5GroupDv8_d"}
!121 = !{!122, !119}
!122 = distinct !{!122, !123, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!123 = distinct !{!123, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!124 = !{!125, !122, !119}
!125 = distinct !{!125, !126, !"_ZL11look_insideRK5GroupRK5PieceDv8_d: argument 0"}
!126 = distinct !{!126, !"_ZL11look_insideRK5GroupRK5PieceDv8_d"}
!127 = distinct !{!127, !38}
!128 = distinct !{!128, !38}
!129 = !{!32, !11, i64 8640}
!130 = distinct !{!130, !38}
!131 = distinct !{!131, !38}
!132 = distinct !{!132, !38}
!133 = !{!134}
!134 = distinct !{!134, !135, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!135 = distinct !{!135, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!136 = distinct !{!136, !38}
!137 = distinct !{!137, !38}
!138 = distinct !{!138, !38}
!139 = distinct !{!139, !38}
!140 = distinct !{!140, !38}
!141 = !{!32, !11, i64 8624}
!142 = distinct !{!142, !38}
!143 = distinct !{!143, !38}
!144 = distinct !{!144, !38}
!145 = distinct !{!145, !38}
!146 = distinct !{!146, !38}
!147 = distinct !{!147, !38}
!148 = distinct !{!148, !38}
!149 = distinct !{!149, !38}
!150 = distinct !{!150, !38}
!151 = distinct !{!151, !38}
!152 = distinct !{!152, !38}
!153 = !{!5, !6, i64 40}
!154 = distinct !{!154, !38}
!155 = distinct !{!155, !38}
!156 = !{!5, !6, i64 56}
!157 = !{!10, !10, i64 0}
!158 = !{!5, !12, i64 168}
!159 = !{!5, !10, i64 160}
!160 = distinct !{!160, !38}
!161 = distinct !{!161, !162}
!162 = !{!"llvm.loop.unroll.disable"}
!163 = distinct !{!163, !38}
!164 = distinct !{!164, !38}
!165 = distinct !{!165, !162}
!166 = !{!5, !10, i64 80}
!167 = !{!5, !10, i64 72}
!168 = !{!5, !10, i64 96}
!169 = !{!5, !12, i64 104}
!170 = distinct !{!170, !38}
!171 = distinct !{!171, !38}
!172 = distinct !{!172, !38}
!173 = distinct !{!173, !162}
!174 = distinct !{!174, !38}
!175 = distinct !{!175, !38}
!176 = distinct !{!176, !38}
!177 = distinct !{!177, !38}
!178 = distinct !{!178, !38}
!179 = distinct !{!179, !38}
!180 = !{!5, !10, i64 88}
!181 = !{!5, !12, i64 112}
!182 = !{!5, !12, i64 120}
!183 = distinct !{!183, !38}
!184 = distinct !{!184, !38}
!185 = distinct !{!185, !38}
