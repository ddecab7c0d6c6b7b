; Made by scripts/lanes.py from sources of sha256 0a0c4c7807021fcb27963ed7e94c9b9c993c10b40494922b339b63c5dbc3acfc.
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
  %17 = add i64 %16, 6400
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
  %18 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store i64 %17, ptr %18, align 64, !tbaa !16
  %19 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  store i64 %17, ptr %19, align 8, !tbaa !20
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %21 = load i64, ptr %20, align 8, !tbaa !4
  %22 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  store i64 %21, ptr %22, align 16, !tbaa !21
  %23 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %24 = load i64, ptr %23, align 8, !tbaa !13
  %25 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  store i64 %24, ptr %25, align 8, !tbaa !22
  %26 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %27 = load i64, ptr %26, align 8, !tbaa !23
  %28 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  store i64 %27, ptr %28, align 32, !tbaa !24
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %30 = load double, ptr %29, align 8, !tbaa !25
  %31 = insertelement <8 x double> poison, double %30, i64 0
  %32 = shufflevector <8 x double> %31, <8 x double> poison, <8 x i32> zeroinitializer
  %33 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  store <8 x double> %32, ptr %33, align 64, !tbaa !26
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  store i64 0, ptr %34, align 8, !tbaa !27
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 6272
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 6216
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
  %115 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  store ptr %114, ptr %115, align 64, !tbaa !39
  %116 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %117 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  br label %118

118:                                              ; preds = %113, %128
  %119 = phi i64 [ 0, %113 ], [ %129, %128 ]
  %120 = load i64, ptr %34, align 8, !tbaa !27
  %121 = load i64, ptr %0, align 8, !tbaa !40
  %122 = icmp slt i64 %120, %121
  %123 = trunc nuw nsw i64 %119 to i32
  br i1 %122, label %124, label %125

124:                                              ; preds = %118
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123) #6
  br label %128

125:                                              ; preds = %118
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123) #6
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
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %135 = load i64, ptr %133, align 8, !tbaa !42
  %136 = load i64, ptr %134, align 8, !tbaa !43
  %137 = sub nsw i64 %135, %136
  %138 = icmp slt i64 %137, 16
  br i1 %138, label %5837, label %139

139:                                              ; preds = %131
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %144 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 6216
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %191 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %193 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %194 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %243 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %244 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %246 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 6080
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %276 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %277 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %278 = getelementptr inbounds nuw i8, ptr %1, i64 6152
  %279 = getelementptr inbounds nuw i8, ptr %1, i64 6160
  %280 = getelementptr inbounds nuw i8, ptr %1, i64 6168
  %281 = getelementptr inbounds nuw i8, ptr %1, i64 6176
  %282 = getelementptr inbounds nuw i8, ptr %1, i64 6184
  %283 = getelementptr inbounds nuw i8, ptr %1, i64 6192
  %284 = getelementptr inbounds nuw i8, ptr %1, i64 6200
  br label %285

285:                                              ; preds = %546, %139
  %286 = phi i64 [ 0, %139 ], [ %547, %546 ]
  %287 = phi i1 [ true, %139 ], [ %548, %546 ]
  %288 = getelementptr inbounds nuw i64, ptr %132, i64 %286
  %289 = load i64, ptr %288, align 8, !tbaa !30
  %290 = icmp eq i64 %289, 0
  br i1 %290, label %542, label %291

291:                                              ; preds = %285
  %292 = getelementptr inbounds nuw [8 x double], ptr %140, i64 0, i64 %286
  %293 = load double, ptr %292, align 8, !tbaa !44
  %294 = fcmp oeq double %293, 0.000000e+00
  br i1 %294, label %542, label %295

295:                                              ; preds = %291
  %296 = load i64, ptr %141, align 16, !tbaa !21
  %297 = load i64, ptr %142, align 8, !tbaa !22
  %298 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %286
  %299 = load i64, ptr %298, align 8, !tbaa !30
  %300 = load ptr, ptr %144, align 8, !tbaa !45
  %301 = mul nsw i64 %299, 40
  %302 = getelementptr inbounds i8, ptr %300, i64 %301
  %303 = getelementptr inbounds nuw double, ptr %145, i64 %286
  %304 = load double, ptr %303, align 8, !tbaa !44
  store double %304, ptr %302, align 8, !tbaa !44
  %305 = getelementptr inbounds nuw double, ptr %146, i64 %286
  %306 = load double, ptr %305, align 8, !tbaa !44
  %307 = getelementptr inbounds nuw i8, ptr %302, i64 8
  store double %306, ptr %307, align 8, !tbaa !44
  %308 = getelementptr inbounds nuw double, ptr %147, i64 %286
  %309 = load double, ptr %308, align 8, !tbaa !44
  %310 = getelementptr inbounds nuw i8, ptr %302, i64 16
  store double %309, ptr %310, align 8, !tbaa !44
  %311 = getelementptr inbounds nuw double, ptr %148, i64 %286
  %312 = load double, ptr %311, align 8, !tbaa !44
  %313 = getelementptr inbounds nuw i8, ptr %302, i64 24
  store double %312, ptr %313, align 8, !tbaa !44
  %314 = getelementptr inbounds nuw double, ptr %149, i64 %286
  %315 = load double, ptr %314, align 8, !tbaa !44
  %316 = getelementptr inbounds nuw i8, ptr %302, i64 32
  store double %315, ptr %316, align 8, !tbaa !44
  %317 = load i64, ptr %150, align 64, !tbaa !16
  %318 = icmp sgt i64 %317, 0
  br i1 %318, label %319, label %526

319:                                              ; preds = %295
  %320 = load ptr, ptr %151, align 8, !tbaa !28
  %321 = load ptr, ptr %152, align 8, !tbaa !46
  %322 = mul nsw i64 %317, %299
  %323 = mul i64 %296, 3
  %324 = load ptr, ptr %153, align 8, !tbaa !47
  %325 = icmp sgt i64 %296, 0
  %326 = getelementptr inbounds nuw double, ptr %10, i64 %286
  %327 = shl i64 %296, 4
  %328 = getelementptr inbounds nuw double, ptr %11, i64 %286
  %329 = icmp sgt i64 %297, 0
  %330 = and i64 %297, 1
  %331 = icmp eq i64 %297, 1
  %332 = and i64 %297, 9223372036854775806
  %333 = icmp eq i64 %330, 0
  br label %334

334:                                              ; preds = %434, %319
  %335 = phi i64 [ 0, %319 ], [ %501, %434 ]
  %336 = getelementptr inbounds nuw %struct.Piece, ptr %320, i64 %335
  %337 = getelementptr inbounds nuw i8, ptr %336, i64 1536
  %338 = getelementptr inbounds nuw double, ptr %337, i64 %286
  %339 = load double, ptr %338, align 8, !tbaa !44
  %340 = getelementptr inbounds nuw i8, ptr %336, i64 4608
  %341 = getelementptr inbounds nuw double, ptr %340, i64 %286
  %342 = load double, ptr %341, align 8, !tbaa !44
  %343 = add nsw i64 %335, %322
  %344 = mul i64 %323, %343
  %345 = getelementptr inbounds double, ptr %321, i64 %344
  %346 = mul nsw i64 %343, 40
  %347 = getelementptr inbounds i8, ptr %324, i64 %346
  br i1 %325, label %348, label %365

348:                                              ; preds = %334
  %349 = getelementptr inbounds nuw i8, ptr %336, i64 8528
  %350 = load ptr, ptr %349, align 16, !tbaa !48
  %351 = getelementptr inbounds nuw i8, ptr %336, i64 8560
  %352 = load ptr, ptr %351, align 16, !tbaa !49
  %353 = getelementptr double, ptr %352, i64 %286
  %354 = getelementptr double, ptr %345, i64 %296
  %355 = getelementptr inbounds nuw i8, ptr %336, i64 8616
  %356 = load ptr, ptr %355, align 8, !tbaa !50
  %357 = getelementptr inbounds nuw i8, ptr %336, i64 8512
  %358 = load i64, ptr %357, align 64, !tbaa !31
  %359 = getelementptr inbounds nuw i8, ptr %336, i64 4672
  %360 = getelementptr inbounds nuw i8, ptr %336, i64 384
  %361 = getelementptr inbounds nuw i8, ptr %336, i64 448
  %362 = getelementptr inbounds nuw i8, ptr %336, i64 512
  %363 = getelementptr inbounds nuw i8, ptr %336, i64 640
  %364 = getelementptr i8, ptr %345, i64 %327
  br label %378

365:                                              ; preds = %409, %334
  %366 = phi double [ %342, %334 ], [ %417, %409 ]
  br i1 %329, label %367, label %434

367:                                              ; preds = %365
  %368 = getelementptr inbounds nuw i8, ptr %336, i64 8696
  %369 = load ptr, ptr %368, align 8, !tbaa !51
  %370 = getelementptr double, ptr %369, i64 %286
  %371 = getelementptr inbounds nuw i8, ptr %336, i64 768
  %372 = getelementptr inbounds nuw double, ptr %371, i64 %286
  %373 = load double, ptr %372, align 8, !tbaa !44
  %374 = getelementptr inbounds nuw i8, ptr %336, i64 8648
  %375 = load ptr, ptr %374, align 8, !tbaa !52
  %376 = getelementptr double, ptr %375, i64 %286
  %377 = load double, ptr %370, align 8, !tbaa !44
  br i1 %331, label %420, label %503

378:                                              ; preds = %409, %348
  %379 = phi double [ %342, %348 ], [ %417, %409 ]
  %380 = phi i64 [ 0, %348 ], [ %418, %409 ]
  %381 = getelementptr inbounds nuw <8 x double>, ptr %350, i64 %380
  %382 = getelementptr inbounds nuw double, ptr %381, i64 %286
  %383 = load double, ptr %382, align 8, !tbaa !44
  %384 = getelementptr inbounds nuw double, ptr %345, i64 %380
  store double %383, ptr %384, align 8, !tbaa !44
  %385 = getelementptr <8 x double>, ptr %353, i64 %380
  %386 = load double, ptr %385, align 8, !tbaa !44
  %387 = getelementptr double, ptr %354, i64 %380
  store double %386, ptr %387, align 8, !tbaa !44
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %388 = getelementptr inbounds nuw <8 x double>, ptr %356, i64 %380
  %389 = load <8 x double>, ptr %388, align 64, !tbaa !26
  %390 = icmp slt i64 %380, %358
  br i1 %390, label %391, label %396

391:                                              ; preds = %378
  %392 = load <8 x double>, ptr %337, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %393 = load <8 x double>, ptr %381, align 64, !tbaa !26
  %394 = load <8 x double>, ptr %363, align 64, !tbaa !26
  %395 = fmul <8 x double> %393, %394
  br label %409

396:                                              ; preds = %378
  %397 = load <8 x double>, ptr %359, align 64, !tbaa !26
  %398 = load <8 x double>, ptr %337, align 64, !tbaa !26
  %399 = fsub <8 x double> %397, %398
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %400 = load <8 x double>, ptr %381, align 64, !tbaa !26
  %401 = load <8 x double>, ptr %360, align 64, !tbaa !26
  %402 = load <8 x double>, ptr %361, align 64, !tbaa !26
  %403 = load <8 x double>, ptr %362, align 64, !tbaa !26
  %404 = fmul <8 x double> %400, %403
  %405 = fmul <8 x double> %404, splat (double 0x3FD5555555555555)
  %406 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %402, <8 x double> splat (double 5.000000e-01), <8 x double> %405)
  %407 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %400, <8 x double> %406, <8 x double> %401)
  %408 = fmul <8 x double> %400, %407
  br label %409

409:                                              ; preds = %396, %391
  %410 = phi <8 x double> [ %392, %391 ], [ %399, %396 ]
  %411 = phi <8 x double> [ %395, %391 ], [ %408, %396 ]
  %412 = fmul <8 x double> %389, %410
  store <8 x double> %412, ptr %10, align 64, !tbaa !26
  %413 = fmul <8 x double> %412, %411
  store <8 x double> %413, ptr %11, align 64, !tbaa !26
  %414 = load double, ptr %326, align 8, !tbaa !44
  %415 = getelementptr double, ptr %364, i64 %380
  store double %414, ptr %415, align 8, !tbaa !44
  %416 = load double, ptr %328, align 8, !tbaa !44
  %417 = fadd double %379, %416
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %418 = add nuw nsw i64 %380, 1
  %419 = icmp eq i64 %418, %296
  br i1 %419, label %365, label %378, !llvm.loop !53

420:                                              ; preds = %503, %367
  %421 = phi double [ poison, %367 ], [ %523, %503 ]
  %422 = phi double [ %377, %367 ], [ %518, %503 ]
  %423 = phi double [ %366, %367 ], [ %523, %503 ]
  %424 = phi i64 [ 0, %367 ], [ %516, %503 ]
  br i1 %333, label %434, label %425

425:                                              ; preds = %420
  %426 = getelementptr <8 x double>, ptr %370, i64 %424
  %427 = getelementptr i8, ptr %426, i64 64
  %428 = load double, ptr %427, align 8, !tbaa !44
  %429 = fsub double %428, %422
  %430 = fmul double %373, %429
  %431 = getelementptr <8 x double>, ptr %376, i64 %424
  %432 = load double, ptr %431, align 8, !tbaa !44
  %433 = tail call double @llvm.fmuladd.f64(double %430, double %432, double %423)
  br label %434

434:                                              ; preds = %425, %420, %365
  %435 = phi double [ %366, %365 ], [ %421, %420 ], [ %433, %425 ]
  %436 = getelementptr inbounds nuw i8, ptr %336, i64 960
  %437 = getelementptr inbounds nuw double, ptr %436, i64 %286
  %438 = load double, ptr %437, align 8, !tbaa !44
  %439 = getelementptr inbounds nuw i8, ptr %336, i64 384
  %440 = getelementptr inbounds nuw double, ptr %439, i64 %286
  %441 = load double, ptr %440, align 8, !tbaa !44
  %442 = getelementptr inbounds nuw i8, ptr %336, i64 448
  %443 = getelementptr inbounds nuw double, ptr %442, i64 %286
  %444 = load double, ptr %443, align 8, !tbaa !44
  %445 = getelementptr inbounds nuw i8, ptr %336, i64 512
  %446 = getelementptr inbounds nuw double, ptr %445, i64 %286
  %447 = load double, ptr %446, align 8, !tbaa !44
  %448 = fmul double %438, %447
  %449 = fdiv double %448, 3.000000e+00
  %450 = tail call double @llvm.fmuladd.f64(double %444, double 5.000000e-01, double %449)
  %451 = tail call double @llvm.fmuladd.f64(double %438, double %450, double %441)
  %452 = fmul double %438, %451
  %453 = getelementptr inbounds nuw i8, ptr %336, i64 1408
  %454 = getelementptr inbounds nuw double, ptr %453, i64 %286
  %455 = load double, ptr %454, align 8, !tbaa !44
  %456 = fsub double %455, %339
  %457 = getelementptr inbounds nuw i8, ptr %336, i64 640
  %458 = getelementptr inbounds nuw double, ptr %457, i64 %286
  %459 = load double, ptr %458, align 8, !tbaa !44
  %460 = fmul double %339, %459
  %461 = fmul double %438, %460
  %462 = tail call double @llvm.fmuladd.f64(double %456, double %452, double %461)
  %463 = getelementptr inbounds nuw i8, ptr %336, i64 4224
  %464 = getelementptr inbounds nuw double, ptr %463, i64 %286
  %465 = load double, ptr %464, align 8, !tbaa !44
  %466 = getelementptr inbounds nuw i8, ptr %336, i64 4288
  %467 = getelementptr inbounds nuw double, ptr %466, i64 %286
  %468 = load double, ptr %467, align 8, !tbaa !44
  %469 = fsub double %465, %468
  %470 = fsub double %435, %462
  %471 = fsub double %469, %470
  %472 = fcmp ogt double %465, 0.000000e+00
  %473 = fneg double %465
  %474 = select i1 %472, double %465, double %473
  %475 = fcmp ogt double %468, 0.000000e+00
  %476 = fneg double %468
  %477 = select i1 %475, double %468, double %476
  %478 = fadd double %474, %477
  %479 = fcmp ogt double %471, 0.000000e+00
  %480 = fneg double %471
  %481 = select i1 %479, double %471, double %480
  %482 = fcmp ogt double %478, 1.000000e+00
  %483 = select i1 %482, double %478, double 1.000000e+00
  %484 = fdiv double %481, %483
  store double %484, ptr %347, align 8, !tbaa !44
  %485 = getelementptr inbounds nuw i8, ptr %336, i64 4160
  %486 = getelementptr inbounds nuw double, ptr %485, i64 %286
  %487 = load double, ptr %486, align 8, !tbaa !44
  %488 = getelementptr inbounds nuw i8, ptr %347, i64 8
  store double %487, ptr %488, align 8, !tbaa !44
  %489 = getelementptr inbounds nuw i8, ptr %336, i64 3968
  %490 = getelementptr inbounds nuw double, ptr %489, i64 %286
  %491 = load double, ptr %490, align 8, !tbaa !44
  %492 = getelementptr inbounds nuw i8, ptr %347, i64 16
  store double %491, ptr %492, align 8, !tbaa !44
  %493 = getelementptr inbounds nuw i8, ptr %336, i64 4032
  %494 = getelementptr inbounds nuw double, ptr %493, i64 %286
  %495 = load double, ptr %494, align 8, !tbaa !44
  %496 = getelementptr inbounds nuw i8, ptr %347, i64 24
  store double %495, ptr %496, align 8, !tbaa !44
  %497 = getelementptr inbounds nuw i8, ptr %336, i64 3904
  %498 = getelementptr inbounds nuw double, ptr %497, i64 %286
  %499 = load double, ptr %498, align 8, !tbaa !44
  %500 = getelementptr inbounds nuw i8, ptr %347, i64 32
  store double %499, ptr %500, align 8, !tbaa !44
  %501 = add nuw nsw i64 %335, 1
  %502 = icmp eq i64 %501, %317
  br i1 %502, label %526, label %334, !llvm.loop !54

503:                                              ; preds = %367, %503
  %504 = phi double [ %518, %503 ], [ %377, %367 ]
  %505 = phi double [ %523, %503 ], [ %366, %367 ]
  %506 = phi i64 [ %516, %503 ], [ 0, %367 ]
  %507 = phi i64 [ %524, %503 ], [ 0, %367 ]
  %508 = or disjoint i64 %506, 1
  %509 = getelementptr <8 x double>, ptr %370, i64 %508
  %510 = load double, ptr %509, align 8, !tbaa !44
  %511 = fsub double %510, %504
  %512 = fmul double %373, %511
  %513 = getelementptr <8 x double>, ptr %376, i64 %506
  %514 = load double, ptr %513, align 8, !tbaa !44
  %515 = tail call double @llvm.fmuladd.f64(double %512, double %514, double %505)
  %516 = add nuw nsw i64 %506, 2
  %517 = getelementptr <8 x double>, ptr %370, i64 %516
  %518 = load double, ptr %517, align 8, !tbaa !44
  %519 = fsub double %518, %510
  %520 = fmul double %373, %519
  %521 = getelementptr <8 x double>, ptr %376, i64 %508
  %522 = load double, ptr %521, align 8, !tbaa !44
  %523 = tail call double @llvm.fmuladd.f64(double %520, double %522, double %515)
  %524 = add i64 %507, 2
  %525 = icmp eq i64 %524, %332
  br i1 %525, label %420, label %503, !llvm.loop !55

526:                                              ; preds = %434, %295
  %527 = load i64, ptr %154, align 8, !tbaa !27
  %528 = load i64, ptr %0, align 8, !tbaa !40
  %529 = icmp slt i64 %527, %528
  br i1 %529, label %532, label %530

530:                                              ; preds = %526
  store i64 0, ptr %288, align 8, !tbaa !30
  %531 = getelementptr inbounds nuw i64, ptr %155, i64 %286
  store i64 0, ptr %531, align 8, !tbaa !30
  br label %539

532:                                              ; preds = %526
  %533 = trunc nuw nsw i64 %286 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %533) #6
  %534 = load i64, ptr %288, align 8, !tbaa !30
  %535 = icmp eq i64 %534, 0
  br i1 %535, label %539, label %536

536:                                              ; preds = %532
  %537 = load double, ptr %292, align 8, !tbaa !44
  %538 = fcmp oeq double %537, 0.000000e+00
  br label %539

539:                                              ; preds = %530, %536, %532
  %540 = phi i1 [ true, %532 ], [ %538, %536 ], [ true, %530 ]
  %541 = and i1 %287, %540
  br label %542

542:                                              ; preds = %539, %291, %285
  %543 = phi i1 [ %287, %291 ], [ %541, %539 ], [ %287, %285 ]
  %544 = add nuw nsw i64 %286, 1
  %545 = icmp eq i64 %544, 8
  br i1 %545, label %549, label %546

546:                                              ; preds = %542, %550
  %547 = phi i64 [ %544, %542 ], [ 0, %550 ]
  %548 = phi i1 [ %543, %542 ], [ true, %550 ]
  br label %285, !llvm.loop !56

549:                                              ; preds = %542
  br i1 %543, label %555, label %550

550:                                              ; preds = %5794, %5836, %5833, %3975, %4303, %549
  %551 = load i64, ptr %133, align 8, !tbaa !42
  %552 = load i64, ptr %134, align 8, !tbaa !43
  %553 = sub nsw i64 %551, %552
  %554 = icmp slt i64 %553, 16
  br i1 %554, label %5837, label %546

555:                                              ; preds = %549
  %556 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %557 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %556)
  %558 = icmp eq i64 %557, 0
  br i1 %558, label %5837, label %559

559:                                              ; preds = %555
  %560 = load <8 x i64>, ptr %155, align 64, !tbaa !26
  %561 = and <8 x i64> %560, %556
  %562 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %561)
  %563 = icmp eq i64 %562, 0
  %564 = load i64, ptr %178, align 8, !tbaa !20
  br i1 %563, label %1519, label %565

565:                                              ; preds = %559
  %566 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %567 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %568 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %569 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %570 = fsub <8 x double> %568, %569
  %571 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %567, <8 x double> %570, <8 x double> %566)
  %572 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %573 = fcmp une <8 x double> %572, splat (double 2.000000e+00)
  %574 = select <8 x i1> %573, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %575 = fmul <8 x double> %571, %574
  %576 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %577 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %578 = fcmp olt <8 x double> %576, %577
  %579 = select <8 x i1> %578, <8 x double> %576, <8 x double> %577
  %580 = fcmp olt <8 x double> %579, %575
  %581 = select <8 x i1> %580, <8 x double> %579, <8 x double> %575
  %582 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %583 = fmul <8 x double> %582, splat (double 5.000000e-01)
  %584 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %585 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %586 = fneg <8 x double> %583
  %587 = icmp eq <8 x i64> %585, zeroinitializer
  %588 = select <8 x i1> %587, <8 x double> %586, <8 x double> %583
  %589 = fadd <8 x double> %584, %588
  %590 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %591 = fsub <8 x double> %589, %590
  %592 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %593 = select <8 x i1> %587, <8 x double> zeroinitializer, <8 x double> %592
  %594 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %595 = fsub <8 x double> %593, %594
  %596 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %597 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %598 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %599 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %598, <8 x double> %590, <8 x double> %597)
  %600 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %601 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %596, <8 x double> %599, <8 x double> %600)
  %602 = fdiv <8 x double> %595, %601
  %603 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %604 = fsub <8 x double> %590, %603
  %605 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %606 = fdiv <8 x double> %604, %605
  %607 = fsub <8 x double> %602, %606
  %608 = fdiv <8 x double> %607, %605
  %609 = fdiv <8 x double> %591, %602
  %610 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %611 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %612 = or <8 x i64> %611, %610
  %613 = icmp eq <8 x i64> %612, zeroinitializer
  %614 = select <8 x i1> %613, <8 x double> %608, <8 x double> zeroinitializer
  %615 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %614, <8 x double> %609, <8 x double> %602)
  %616 = fdiv <8 x double> %591, %615
  %617 = fcmp ule <8 x double> %616, zeroinitializer
  %618 = select <8 x i1> %617, <8 x double> %609, <8 x double> %616
  %619 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %620 = fcmp une <8 x double> %619, zeroinitializer
  %621 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %622 = fcmp une <8 x double> %621, zeroinitializer
  %623 = fcmp ule <8 x double> %592, zeroinitializer
  %624 = or <8 x i1> %623, %620
  %625 = fcmp ule <8 x double> %609, zeroinitializer
  %626 = or <8 x i1> %625, %624
  %627 = or <8 x i1> %622, %626
  %628 = select <8 x i1> %627, <8 x double> splat (double 1.000000e+09), <8 x double> %618
  %629 = icmp sgt i64 %564, 0
  br i1 %629, label %630, label %695

630:                                              ; preds = %565
  %631 = load ptr, ptr %151, align 8, !tbaa !28
  %632 = fmul <8 x double> %605, splat (double 3.000000e+00)
  br label %633

633:                                              ; preds = %630, %633
  %634 = phi <8 x double> [ %628, %630 ], [ %692, %633 ]
  %635 = phi i64 [ 0, %630 ], [ %693, %633 ]
  %636 = getelementptr inbounds nuw %struct.Piece, ptr %631, i64 %635
  %637 = getelementptr inbounds nuw i8, ptr %636, i64 3904
  %638 = load <8 x double>, ptr %637, align 64, !tbaa !26
  %639 = getelementptr inbounds nuw i8, ptr %636, i64 1472
  %640 = load <8 x double>, ptr %639, align 64, !tbaa !26
  %641 = fsub <8 x double> %638, %640
  %642 = getelementptr inbounds nuw i8, ptr %636, i64 832
  %643 = load <8 x double>, ptr %642, align 64, !tbaa !26
  %644 = fmul <8 x double> %641, %643
  %645 = getelementptr inbounds nuw i8, ptr %636, i64 1600
  %646 = load <8 x double>, ptr %645, align 64, !tbaa !26
  %647 = getelementptr inbounds nuw i8, ptr %636, i64 4160
  %648 = load <8 x double>, ptr %647, align 64, !tbaa !26
  %649 = fsub <8 x double> %646, %648
  %650 = getelementptr inbounds nuw i8, ptr %636, i64 8320
  %651 = load <8 x i64>, ptr %650, align 64, !tbaa !26
  %652 = getelementptr inbounds nuw i8, ptr %636, i64 7680
  %653 = load <8 x double>, ptr %652, align 64, !tbaa !26
  %654 = fcmp une <8 x double> %653, splat (double 1.000000e+00)
  %655 = select <8 x i1> %654, <8 x double> %644, <8 x double> %649
  %656 = getelementptr inbounds nuw i8, ptr %636, i64 3968
  %657 = load <8 x double>, ptr %656, align 64, !tbaa !26
  %658 = icmp eq <8 x i64> %651, zeroinitializer
  %659 = select <8 x i1> %658, <8 x double> %657, <8 x double> %655
  %660 = getelementptr inbounds nuw i8, ptr %636, i64 6016
  %661 = load <8 x double>, ptr %660, align 64, !tbaa !26
  %662 = getelementptr inbounds nuw i8, ptr %636, i64 7552
  %663 = load <8 x double>, ptr %662, align 64, !tbaa !26
  %664 = fdiv <8 x double> %663, %605
  %665 = select <8 x i1> %658, <8 x double> %664, <8 x double> zeroinitializer
  %666 = fsub <8 x double> %661, %665
  %667 = fdiv <8 x double> %659, %666
  %668 = getelementptr inbounds nuw i8, ptr %636, i64 4864
  %669 = load <8 x double>, ptr %668, align 64, !tbaa !26
  %670 = fsub <8 x double> %669, %657
  %671 = fdiv <8 x double> %670, %605
  %672 = getelementptr inbounds nuw i8, ptr %636, i64 8384
  %673 = load <8 x i64>, ptr %672, align 64, !tbaa !26
  %674 = or <8 x i64> %673, %651
  %675 = fcmp ule <8 x double> %667, %632
  %676 = fsub <8 x double> %666, %671
  %677 = icmp eq <8 x i64> %674, zeroinitializer
  %678 = select <8 x i1> %675, <8 x i1> %677, <8 x i1> zeroinitializer
  %679 = select <8 x i1> %678, <8 x double> %676, <8 x double> zeroinitializer
  %680 = fdiv <8 x double> %667, %605
  %681 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %679, <8 x double> %680, <8 x double> %666)
  %682 = fdiv <8 x double> %659, %681
  %683 = fcmp ule <8 x double> %682, zeroinitializer
  %684 = select <8 x i1> %683, <8 x double> %667, <8 x double> %682
  %685 = fcmp ule <8 x double> %659, zeroinitializer
  %686 = fcmp ule <8 x double> %666, zeroinitializer
  %687 = or <8 x i1> %685, %686
  %688 = fcmp ogt <8 x double> %684, splat (double 1.000000e-03)
  %689 = select <8 x i1> %688, <8 x double> %684, <8 x double> splat (double 1.000000e-03)
  %690 = select <8 x i1> %687, <8 x double> splat (double 1.000000e+09), <8 x double> %689
  %691 = fcmp olt <8 x double> %634, %690
  %692 = select <8 x i1> %691, <8 x double> %634, <8 x double> %690
  %693 = add nuw nsw i64 %635, 1
  %694 = icmp eq i64 %693, %564
  br i1 %694, label %695, label %633, !llvm.loop !57

695:                                              ; preds = %633, %565
  %696 = phi <8 x double> [ %628, %565 ], [ %692, %633 ]
  %697 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %698 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %699 = fadd <8 x double> %697, %698
  %700 = fsub <8 x double> %699, %568
  %701 = fmul <8 x double> %696, splat (double 1.050000e+00)
  %702 = fcmp ugt <8 x double> %700, %701
  %703 = select <8 x i1> %702, <8 x double> %696, <8 x double> %700
  %704 = fmul <8 x double> %581, splat (double 0x3FF000010C6F7A0B)
  %705 = fcmp ole <8 x double> %703, %704
  %706 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %707 = fcmp ogt <8 x double> %706, %581
  %708 = select <8 x i1> %707, <8 x double> %706, <8 x double> %581
  %709 = icmp ne <8 x i64> %561, zeroinitializer
  %710 = select <8 x i1> %705, <8 x i1> %709, <8 x i1> zeroinitializer
  %711 = select <8 x i1> %710, <8 x double> %708, <8 x double> %706
  store <8 x double> %711, ptr %181, align 64, !tbaa !26
  %712 = fmul <8 x double> %581, splat (double 2.000000e+00)
  %713 = fcmp uge <8 x double> %703, %712
  %714 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %715 = fcmp une <8 x double> %714, zeroinitializer
  %716 = or <8 x i1> %715, %713
  %717 = fmul <8 x double> %703, splat (double 5.000000e-01)
  %718 = select <8 x i1> %716, <8 x double> %581, <8 x double> %717
  %719 = select <8 x i1> %705, <8 x double> %703, <8 x double> %718
  %720 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %721 = icmp eq <8 x i64> %561, zeroinitializer
  %722 = select <8 x i1> %721, <8 x double> %720, <8 x double> %719
  store <8 x double> %722, ptr %182, align 64, !tbaa !26
  %723 = fdiv <8 x double> %722, %605
  %724 = fdiv <8 x double> splat (double 1.000000e+00), %722
  %725 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %723, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %726 = fadd <8 x double> %723, splat (double 1.000000e+00)
  %727 = fdiv <8 x double> %725, %726
  %728 = fmul <8 x double> %724, %727
  %729 = icmp eq <8 x i64> %610, zeroinitializer
  %730 = select <8 x i1> %729, <8 x double> %728, <8 x double> %724
  %731 = fneg <8 x double> %724
  %732 = fneg <8 x double> %726
  %733 = fmul <8 x double> %724, %732
  %734 = select <8 x i1> %729, <8 x double> %733, <8 x double> %731
  %735 = fmul <8 x double> %723, %723
  %736 = fdiv <8 x double> %735, %726
  %737 = fmul <8 x double> %724, %736
  %738 = select <8 x i1> %729, <8 x double> %737, <8 x double> zeroinitializer
  %739 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %740 = select <8 x i1> %721, <8 x double> %739, <8 x double> %730
  store <8 x double> %740, ptr %184, align 64, !tbaa !26
  %741 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %742 = select <8 x i1> %721, <8 x double> %741, <8 x double> %734
  store <8 x double> %742, ptr %185, align 64, !tbaa !26
  %743 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %744 = select <8 x i1> %721, <8 x double> %743, <8 x double> %738
  store <8 x double> %744, ptr %186, align 64, !tbaa !26
  %745 = select <8 x i1> %729, <8 x double> %723, <8 x double> zeroinitializer
  %746 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %745, <8 x double> %604, <8 x double> %590)
  %747 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %748 = select <8 x i1> %721, <8 x double> %747, <8 x double> %746
  %749 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %750 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %751 = fsub <8 x double> %749, %750
  %752 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %745, <8 x double> %751, <8 x double> %749)
  %753 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %754 = select <8 x i1> %721, <8 x double> %753, <8 x double> %752
  store <8 x double> %754, ptr %249, align 64, !tbaa !26
  %755 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %756 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %757 = fsub <8 x double> %755, %756
  %758 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %745, <8 x double> %757, <8 x double> %755)
  %759 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %760 = select <8 x i1> %721, <8 x double> %759, <8 x double> %758
  store <8 x double> %760, ptr %252, align 64, !tbaa !26
  %761 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %762 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %763 = fsub <8 x double> %761, %762
  %764 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %745, <8 x double> %763, <8 x double> %761)
  %765 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %766 = select <8 x i1> %721, <8 x double> %765, <8 x double> %764
  store <8 x double> %766, ptr %255, align 64, !tbaa !26
  %767 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %768 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %769 = fsub <8 x double> %767, %768
  %770 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %745, <8 x double> %769, <8 x double> %767)
  %771 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %772 = select <8 x i1> %721, <8 x double> %771, <8 x double> %770
  store <8 x double> %772, ptr %258, align 64, !tbaa !26
  %773 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %774 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %775 = fsub <8 x double> %773, %774
  %776 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %745, <8 x double> %775, <8 x double> %773)
  %777 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %778 = select <8 x i1> %721, <8 x double> %777, <8 x double> %776
  store <8 x double> %778, ptr %261, align 64, !tbaa !26
  %779 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %780 = icmp eq <8 x i64> %779, zeroinitializer
  %781 = select <8 x i1> %780, <8 x double> zeroinitializer, <8 x double> %592
  %782 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %783 = fsub <8 x double> %781, %782
  %784 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %785 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %598, <8 x double> %784, <8 x double> %597)
  %786 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %596, <8 x double> %785, <8 x double> %600)
  %787 = fdiv <8 x double> %783, %786
  %788 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %789 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %790 = or <8 x i64> %789, %788
  %791 = and <8 x i64> %790, %561
  %792 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %722, <8 x double> %787, <8 x double> %784)
  %793 = icmp eq <8 x i64> %791, zeroinitializer
  %794 = select <8 x i1> %622, <8 x i1> splat (i1 true), <8 x i1> %793
  %795 = select <8 x i1> %794, <8 x double> %748, <8 x double> %792
  store <8 x double> %795, ptr %187, align 64, !tbaa !26
  %796 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %797 = select <8 x i1> %721, <8 x double> %796, <8 x double> %783
  store <8 x double> %797, ptr %188, align 64, !tbaa !26
  %798 = xor <8 x i64> %789, splat (i64 -1)
  %799 = and <8 x i64> %788, %798
  store <8 x i64> %799, ptr %175, align 64, !tbaa !26
  %800 = load i64, ptr %178, align 8, !tbaa !20
  %801 = icmp sgt i64 %800, 0
  br i1 %801, label %802, label %1429

802:                                              ; preds = %695
  %803 = xor <8 x i64> %561, splat (i64 -1)
  br label %804

804:                                              ; preds = %802, %1397
  %805 = phi i64 [ 0, %802 ], [ %1413, %1397 ]
  %806 = load ptr, ptr %151, align 8, !tbaa !28
  %807 = getelementptr inbounds nuw %struct.Piece, ptr %806, i64 %805
  %808 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %809 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %810 = getelementptr inbounds nuw i8, ptr %807, i64 8384
  %811 = load <8 x i64>, ptr %810, align 64, !tbaa !26
  %812 = fdiv <8 x double> %808, %809
  %813 = fdiv <8 x double> splat (double 1.000000e+00), %808
  %814 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %812, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %815 = fadd <8 x double> %812, splat (double 1.000000e+00)
  %816 = fdiv <8 x double> %814, %815
  %817 = fmul <8 x double> %813, %816
  %818 = icmp eq <8 x i64> %811, zeroinitializer
  %819 = select <8 x i1> %818, <8 x double> %817, <8 x double> %813
  %820 = fneg <8 x double> %813
  %821 = fneg <8 x double> %815
  %822 = fmul <8 x double> %813, %821
  %823 = select <8 x i1> %818, <8 x double> %822, <8 x double> %820
  %824 = fmul <8 x double> %812, %812
  %825 = fdiv <8 x double> %824, %815
  %826 = fmul <8 x double> %813, %825
  %827 = select <8 x i1> %818, <8 x double> %826, <8 x double> zeroinitializer
  %828 = getelementptr inbounds nuw i8, ptr %807, i64 5632
  %829 = load <8 x double>, ptr %828, align 64, !tbaa !26
  %830 = select <8 x i1> %721, <8 x double> %829, <8 x double> %819
  store <8 x double> %830, ptr %828, align 64, !tbaa !26
  %831 = getelementptr inbounds nuw i8, ptr %807, i64 5696
  %832 = load <8 x double>, ptr %831, align 64, !tbaa !26
  %833 = select <8 x i1> %721, <8 x double> %832, <8 x double> %823
  store <8 x double> %833, ptr %831, align 64, !tbaa !26
  %834 = getelementptr inbounds nuw i8, ptr %807, i64 5760
  %835 = load <8 x double>, ptr %834, align 64, !tbaa !26
  %836 = select <8 x i1> %721, <8 x double> %835, <8 x double> %827
  store <8 x double> %836, ptr %834, align 64, !tbaa !26
  %837 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %838 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %839 = fdiv <8 x double> %837, %838
  %840 = select <8 x i1> %818, <8 x double> %839, <8 x double> zeroinitializer
  %841 = getelementptr inbounds nuw i8, ptr %807, i64 2944
  %842 = getelementptr inbounds nuw i8, ptr %807, i64 3840
  %843 = getelementptr inbounds nuw i8, ptr %807, i64 4736
  br label %1416

844:                                              ; preds = %1416
  %845 = getelementptr inbounds nuw i8, ptr %807, i64 6080
  %846 = getelementptr inbounds nuw i8, ptr %807, i64 3520
  %847 = load <8 x double>, ptr %846, align 64, !tbaa !26
  %848 = fcmp ogt <8 x double> %847, zeroinitializer
  %849 = select <8 x i1> %848, <8 x double> %847, <8 x double> zeroinitializer
  %850 = load <8 x double>, ptr %845, align 64, !tbaa !26
  %851 = select <8 x i1> %721, <8 x double> %850, <8 x double> %849
  store <8 x double> %851, ptr %845, align 64, !tbaa !26
  %852 = getelementptr inbounds nuw i8, ptr %807, i64 384
  %853 = load <8 x double>, ptr %852, align 64, !tbaa !26
  %854 = getelementptr inbounds nuw i8, ptr %807, i64 448
  %855 = load <8 x double>, ptr %854, align 64, !tbaa !26
  %856 = getelementptr inbounds nuw i8, ptr %807, i64 512
  %857 = load <8 x double>, ptr %856, align 64, !tbaa !26
  %858 = getelementptr inbounds nuw i8, ptr %807, i64 640
  %859 = load <8 x double>, ptr %858, align 64, !tbaa !26
  %860 = getelementptr inbounds nuw i8, ptr %807, i64 768
  %861 = load <8 x double>, ptr %860, align 64, !tbaa !26
  %862 = getelementptr inbounds nuw i8, ptr %807, i64 832
  %863 = getelementptr inbounds nuw i8, ptr %807, i64 1536
  %864 = load <8 x double>, ptr %863, align 64, !tbaa !26
  %865 = getelementptr inbounds nuw i8, ptr %807, i64 1600
  %866 = getelementptr inbounds nuw i8, ptr %807, i64 4672
  %867 = load <8 x double>, ptr %866, align 64, !tbaa !26
  %868 = fsub <8 x double> %867, %864
  %869 = getelementptr inbounds nuw i8, ptr %807, i64 5568
  %870 = load <8 x double>, ptr %869, align 64, !tbaa !26
  %871 = fsub <8 x double> %870, %864
  %872 = load <8 x double>, ptr %831, align 64, !tbaa !26
  %873 = load <8 x double>, ptr %834, align 64, !tbaa !26
  %874 = fmul <8 x double> %868, %872
  %875 = fmul <8 x double> %871, %873
  %876 = fmul <8 x double> %864, %872
  %877 = fmul <8 x double> %859, %876
  %878 = fmul <8 x double> %864, %873
  %879 = fmul <8 x double> %859, %878
  %880 = getelementptr inbounds nuw i8, ptr %807, i64 8528
  %881 = load ptr, ptr %880, align 16, !tbaa !48
  %882 = getelementptr inbounds nuw i8, ptr %807, i64 8536
  %883 = load ptr, ptr %882, align 8, !tbaa !58
  %884 = getelementptr inbounds nuw i8, ptr %807, i64 8616
  %885 = load ptr, ptr %884, align 8, !tbaa !50
  %886 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %887 = and <8 x i64> %886, %803
  %888 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %887)
  %889 = icmp eq i64 %888, 0
  %890 = getelementptr inbounds nuw i8, ptr %807, i64 8520
  %891 = load ptr, ptr %890, align 8, !tbaa !59
  %892 = getelementptr inbounds nuw i8, ptr %807, i64 8544
  %893 = load ptr, ptr %892, align 32, !tbaa !60
  %894 = load i64, ptr %141, align 16, !tbaa !21
  %895 = icmp sgt i64 %894, 0
  br i1 %895, label %896, label %898

896:                                              ; preds = %844
  %897 = getelementptr inbounds nuw i8, ptr %807, i64 8512
  br label %911

898:                                              ; preds = %946, %844
  %899 = fmul <8 x double> %861, %872
  %900 = fmul <8 x double> %861, %873
  %901 = getelementptr inbounds nuw i8, ptr %807, i64 8696
  %902 = load ptr, ptr %901, align 8, !tbaa !51
  %903 = getelementptr inbounds nuw i8, ptr %807, i64 8704
  %904 = load ptr, ptr %903, align 64, !tbaa !61
  %905 = load i64, ptr %142, align 8, !tbaa !22
  %906 = icmp sgt i64 %905, 0
  br i1 %906, label %907, label %980

907:                                              ; preds = %898
  %908 = getelementptr inbounds nuw i8, ptr %807, i64 8648
  %909 = getelementptr inbounds nuw i8, ptr %807, i64 8656
  %910 = getelementptr inbounds nuw i8, ptr %807, i64 8664
  br label %953

911:                                              ; preds = %896, %946
  %912 = phi i64 [ 0, %896 ], [ %950, %946 ]
  %913 = getelementptr inbounds nuw <8 x double>, ptr %881, i64 %912
  %914 = load <8 x double>, ptr %913, align 64, !tbaa !26
  %915 = getelementptr inbounds nuw <8 x double>, ptr %883, i64 %912
  %916 = load <8 x double>, ptr %915, align 64, !tbaa !26
  %917 = fsub <8 x double> %914, %916
  %918 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %840, <8 x double> %917, <8 x double> %914)
  br i1 %889, label %923, label %919

919:                                              ; preds = %911
  %920 = getelementptr inbounds nuw <8 x double>, ptr %891, i64 %912
  %921 = load <8 x double>, ptr %920, align 64, !tbaa !26
  %922 = select <8 x i1> %721, <8 x double> %921, <8 x double> %918
  br label %923

923:                                              ; preds = %919, %911
  %924 = phi <8 x double> [ %922, %919 ], [ %918, %911 ]
  %925 = getelementptr inbounds nuw <8 x double>, ptr %891, i64 %912
  store <8 x double> %924, ptr %925, align 64, !tbaa !26
  %926 = load i64, ptr %897, align 64, !tbaa !31
  %927 = icmp slt i64 %912, %926
  %928 = getelementptr inbounds nuw <8 x double>, ptr %885, i64 %912
  %929 = load <8 x double>, ptr %928, align 64, !tbaa !26
  br i1 %927, label %930, label %933

930:                                              ; preds = %923
  %931 = fmul <8 x double> %879, %916
  %932 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %877, <8 x double> %914, <8 x double> %931)
  br label %946

933:                                              ; preds = %923
  %934 = fmul <8 x double> %857, %914
  %935 = fmul <8 x double> %934, splat (double 0x3FD5555555555555)
  %936 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %855, <8 x double> splat (double 5.000000e-01), <8 x double> %935)
  %937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %914, <8 x double> %936, <8 x double> %853)
  %938 = fmul <8 x double> %914, %937
  %939 = fmul <8 x double> %857, %916
  %940 = fmul <8 x double> %939, splat (double 0x3FD5555555555555)
  %941 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %855, <8 x double> splat (double 5.000000e-01), <8 x double> %940)
  %942 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %916, <8 x double> %941, <8 x double> %853)
  %943 = fmul <8 x double> %916, %942
  %944 = fmul <8 x double> %875, %943
  %945 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %874, <8 x double> %938, <8 x double> %944)
  br label %946

946:                                              ; preds = %933, %930
  %947 = phi <8 x double> [ %945, %933 ], [ %932, %930 ]
  %948 = fmul <8 x double> %947, %929
  %949 = getelementptr inbounds nuw <8 x double>, ptr %893, i64 %912
  store <8 x double> %948, ptr %949, align 64, !tbaa !26
  %950 = add nuw nsw i64 %912, 1
  %951 = load i64, ptr %141, align 16, !tbaa !21
  %952 = icmp slt i64 %950, %951
  br i1 %952, label %911, label %898, !llvm.loop !62

953:                                              ; preds = %907, %953
  %954 = phi i64 [ 0, %907 ], [ %955, %953 ]
  %955 = add nuw nsw i64 %954, 1
  %956 = getelementptr inbounds nuw <8 x double>, ptr %902, i64 %955
  %957 = load <8 x double>, ptr %956, align 64, !tbaa !26
  %958 = getelementptr inbounds nuw <8 x double>, ptr %902, i64 %954
  %959 = load <8 x double>, ptr %958, align 64, !tbaa !26
  %960 = fsub <8 x double> %957, %959
  %961 = load ptr, ptr %908, align 8, !tbaa !52
  %962 = getelementptr inbounds nuw <8 x double>, ptr %961, i64 %954
  %963 = load <8 x double>, ptr %962, align 64, !tbaa !26
  %964 = fmul <8 x double> %960, %963
  %965 = getelementptr inbounds nuw <8 x double>, ptr %904, i64 %955
  %966 = load <8 x double>, ptr %965, align 64, !tbaa !26
  %967 = getelementptr inbounds nuw <8 x double>, ptr %904, i64 %954
  %968 = load <8 x double>, ptr %967, align 64, !tbaa !26
  %969 = fsub <8 x double> %966, %968
  %970 = load ptr, ptr %909, align 16, !tbaa !63
  %971 = getelementptr inbounds nuw <8 x double>, ptr %970, i64 %954
  %972 = load <8 x double>, ptr %971, align 64, !tbaa !26
  %973 = fmul <8 x double> %969, %972
  %974 = fmul <8 x double> %900, %973
  %975 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %899, <8 x double> %964, <8 x double> %974)
  %976 = load ptr, ptr %910, align 8, !tbaa !64
  %977 = getelementptr inbounds nuw <8 x double>, ptr %976, i64 %954
  store <8 x double> %975, ptr %977, align 64, !tbaa !26
  %978 = load i64, ptr %142, align 8, !tbaa !22
  %979 = icmp slt i64 %955, %978
  br i1 %979, label %953, label %980, !llvm.loop !65

980:                                              ; preds = %953, %898
  %981 = getelementptr inbounds nuw i8, ptr %807, i64 1664
  %982 = load <8 x double>, ptr %981, align 64, !tbaa !26
  %983 = fcmp ogt <8 x double> %982, zeroinitializer
  %984 = bitcast <8 x i1> %983 to i8
  %985 = icmp eq i8 %984, 0
  br i1 %985, label %986, label %991

986:                                              ; preds = %980
  %987 = getelementptr inbounds nuw i8, ptr %807, i64 7552
  %988 = load <8 x double>, ptr %987, align 64, !tbaa !26
  %989 = select <8 x i1> %721, <8 x double> %988, <8 x double> zeroinitializer
  store <8 x double> %989, ptr %987, align 64, !tbaa !26
  %990 = load <8 x double>, ptr %862, align 64, !tbaa !26, !noalias !66
  br label %1100

991:                                              ; preds = %980
  %992 = load <8 x double>, ptr %863, align 64, !tbaa !26
  %993 = getelementptr inbounds nuw i8, ptr %807, i64 1728
  %994 = load <8 x double>, ptr %993, align 64, !tbaa !26
  %995 = getelementptr inbounds nuw i8, ptr %807, i64 1856
  %996 = load <8 x double>, ptr %995, align 64, !tbaa !26
  %997 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %998 = fneg <8 x double> %997
  %999 = fdiv <8 x double> %998, %994
  %1000 = fcmp ogt <8 x double> %999, splat (double -7.000000e+02)
  %1001 = select <8 x i1> %1000, <8 x double> %999, <8 x double> splat (double -7.000000e+02)
  %1002 = fcmp olt <8 x double> %1001, splat (double 7.000000e+02)
  %1003 = select <8 x i1> %1002, <8 x double> %1001, <8 x double> splat (double 7.000000e+02)
  %1004 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1003, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %1005 = fadd <8 x double> %1004, splat (double 0xC338000000000000)
  %1006 = fneg <8 x double> %1005
  %1007 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1006, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %1003)
  %1008 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1006, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %1007)
  %1009 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1008, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %1010 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1009, <8 x double> %1008, <8 x double> splat (double 0x3E5AE64567F544E4))
  %1011 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1010, <8 x double> %1008, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %1012 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1011, <8 x double> %1008, <8 x double> splat (double 0x3EC71DE3A556C734))
  %1013 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1012, <8 x double> %1008, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %1014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1013, <8 x double> %1008, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %1015 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1014, <8 x double> %1008, <8 x double> splat (double 0x3F56C16C16C16C17))
  %1016 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1015, <8 x double> %1008, <8 x double> splat (double 0x3F81111111111111))
  %1017 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1016, <8 x double> %1008, <8 x double> splat (double 0x3FA5555555555555))
  %1018 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1017, <8 x double> %1008, <8 x double> splat (double 0x3FC5555555555555))
  %1019 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1018, <8 x double> %1008, <8 x double> splat (double 5.000000e-01))
  %1020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1019, <8 x double> %1008, <8 x double> splat (double 1.000000e+00))
  %1021 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1020, <8 x double> %1008, <8 x double> splat (double 1.000000e+00))
  %1022 = bitcast <8 x double> %1004 to <8 x i64>
  %1023 = shl <8 x i64> %1022, splat (i64 52)
  %1024 = bitcast <8 x double> %1021 to <8 x i64>
  %1025 = add <8 x i64> %1023, %1024
  %1026 = bitcast <8 x i64> %1025 to <8 x double>
  %1027 = fsub <8 x double> splat (double 1.000000e+00), %1026
  %1028 = load <8 x double>, ptr %866, align 64, !tbaa !26
  %1029 = fsub <8 x double> %1028, %992
  %1030 = load ptr, ptr %890, align 8, !tbaa !59
  %1031 = load ptr, ptr %880, align 16, !tbaa !48
  %1032 = getelementptr inbounds nuw i8, ptr %807, i64 8560
  %1033 = load ptr, ptr %1032, align 16, !tbaa !49
  %1034 = load ptr, ptr %884, align 8, !tbaa !50
  %1035 = getelementptr inbounds nuw i8, ptr %807, i64 8552
  %1036 = load ptr, ptr %1035, align 8, !tbaa !69
  %1037 = getelementptr inbounds nuw i8, ptr %807, i64 8512
  %1038 = load i64, ptr %1037, align 64, !tbaa !31
  %1039 = load i64, ptr %141, align 16, !tbaa !21
  %1040 = icmp slt i64 %1038, %1039
  br i1 %1040, label %1041, label %1045

1041:                                             ; preds = %991
  %1042 = getelementptr inbounds nuw i8, ptr %807, i64 1792
  %1043 = load <8 x double>, ptr %1042, align 64, !tbaa !26
  %1044 = fneg <8 x double> %1043
  br label %1057

1045:                                             ; preds = %1057, %991
  %1046 = phi <8 x double> [ zeroinitializer, %991 ], [ %1088, %1057 ]
  %1047 = phi <8 x double> [ zeroinitializer, %991 ], [ %1096, %1057 ]
  %1048 = getelementptr inbounds nuw i8, ptr %807, i64 3904
  %1049 = load <8 x double>, ptr %1048, align 64, !tbaa !26
  %1050 = fsub <8 x double> %1049, %1028
  %1051 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1046, <8 x double> %1050, <8 x double> %1047)
  %1052 = getelementptr inbounds nuw i8, ptr %807, i64 7552
  %1053 = load <8 x double>, ptr %862, align 64, !tbaa !26
  %1054 = fmul <8 x double> %1053, %1051
  %1055 = load <8 x double>, ptr %1052, align 64, !tbaa !26
  %1056 = select <8 x i1> %721, <8 x double> %1055, <8 x double> %1054
  store <8 x double> %1056, ptr %1052, align 64, !tbaa !26
  br label %1100

1057:                                             ; preds = %1041, %1057
  %1058 = phi <8 x double> [ zeroinitializer, %1041 ], [ %1096, %1057 ]
  %1059 = phi i64 [ %1038, %1041 ], [ %1097, %1057 ]
  %1060 = getelementptr inbounds <8 x double>, ptr %1031, i64 %1059
  %1061 = load <8 x double>, ptr %1060, align 64, !tbaa !26
  %1062 = getelementptr inbounds <8 x double>, ptr %1030, i64 %1059
  %1063 = load <8 x double>, ptr %1062, align 64, !tbaa !26
  %1064 = fadd <8 x double> %1061, %1063
  %1065 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1064, <8 x double> splat (double 5.000000e-01), <8 x double> %1044)
  %1066 = fmul <8 x double> %996, %1065
  %1067 = fcmp ogt <8 x double> %1066, splat (double -5.000000e+00)
  %1068 = select <8 x i1> %1067, <8 x double> %1066, <8 x double> splat (double -5.000000e+00)
  %1069 = fcmp olt <8 x double> %1068, splat (double 5.000000e+00)
  %1070 = select <8 x i1> %1069, <8 x double> %1068, <8 x double> splat (double 5.000000e+00)
  %1071 = fmul <8 x double> %1070, %1070
  %1072 = fadd <8 x double> %1071, splat (double 3.780000e+02)
  %1073 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1071, <8 x double> %1072, <8 x double> splat (double 1.732500e+04))
  %1074 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1071, <8 x double> %1073, <8 x double> splat (double 1.351350e+05))
  %1075 = fmul <8 x double> %1070, %1074
  %1076 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1071, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1077 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1071, <8 x double> %1076, <8 x double> splat (double 6.237000e+04))
  %1078 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1071, <8 x double> %1077, <8 x double> splat (double 1.351350e+05))
  %1079 = fdiv <8 x double> %1075, %1078
  %1080 = fadd <8 x double> %1079, splat (double 1.000000e+00)
  %1081 = fmul <8 x double> %982, %1080
  %1082 = getelementptr inbounds <8 x double>, ptr %1033, i64 %1059
  %1083 = load <8 x double>, ptr %1082, align 64, !tbaa !26
  %1084 = fadd <8 x double> %1083, splat (double -1.000000e+00)
  %1085 = fadd <8 x double> %1084, %1081
  %1086 = fcmp ogt <8 x double> %1085, zeroinitializer
  %1087 = select <8 x i1> %1086, <8 x double> %1085, <8 x double> zeroinitializer
  %1088 = fmul <8 x double> %1027, %1087
  %1089 = fsub <8 x double> %1083, %1088
  %1090 = getelementptr inbounds <8 x double>, ptr %1036, i64 %1059
  %1091 = load <8 x double>, ptr %1090, align 64, !tbaa !26
  %1092 = select <8 x i1> %721, <8 x double> %1091, <8 x double> %1089
  store <8 x double> %1092, ptr %1090, align 64, !tbaa !26
  %1093 = getelementptr inbounds <8 x double>, ptr %1034, i64 %1059
  %1094 = load <8 x double>, ptr %1093, align 64, !tbaa !26
  %1095 = fmul <8 x double> %1029, %1094
  %1096 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1088, <8 x double> %1095, <8 x double> %1058)
  %1097 = add nsw i64 %1059, 1
  %1098 = load i64, ptr %141, align 16, !tbaa !21
  %1099 = icmp slt i64 %1097, %1098
  br i1 %1099, label %1057, label %1045, !llvm.loop !70

1100:                                             ; preds = %986, %1045
  %1101 = phi <8 x double> [ %989, %986 ], [ %1056, %1045 ]
  %1102 = phi <8 x double> [ %990, %986 ], [ %1053, %1045 ]
  %1103 = load <8 x double>, ptr %841, align 64, !tbaa !26
  %1104 = load <8 x double>, ptr %842, align 64, !tbaa !26
  %1105 = fcmp olt <8 x double> %1103, %1104
  %1106 = select <8 x i1> %1105, <8 x double> %1103, <8 x double> %1104
  %1107 = load <8 x double>, ptr %807, align 64, !tbaa !26
  %1108 = fmul <8 x double> %1107, splat (double 3.000000e-01)
  %1109 = fcmp ogt <8 x double> %1106, %1108
  %1110 = select <8 x i1> %1109, <8 x double> %1106, <8 x double> %1108
  %1111 = select <8 x i1> %721, <8 x double> %1103, <8 x double> %1110
  store <8 x double> %1111, ptr %841, align 64, !tbaa !26
  %1112 = getelementptr inbounds nuw i8, ptr %807, i64 3072
  %1113 = load <8 x double>, ptr %1112, align 64, !tbaa !26, !noalias !66
  %1114 = getelementptr inbounds nuw i8, ptr %807, i64 7744
  %1115 = load <8 x double>, ptr %1114, align 64, !tbaa !26, !noalias !66
  %1116 = fmul <8 x double> %1113, %1115
  %1117 = fcmp ogt <8 x double> %1116, zeroinitializer
  %1118 = select <8 x i1> %1117, <8 x double> %1116, <8 x double> zeroinitializer
  %1119 = fcmp uge <8 x double> %1118, splat (double 1.000000e+00)
  %1120 = select <8 x i1> %1119, <8 x double> splat (double 1.000000e+00), <8 x double> %1118
  %1121 = getelementptr inbounds nuw i8, ptr %807, i64 8448
  %1122 = load <8 x i64>, ptr %1121, align 64, !tbaa !26, !noalias !66
  %1123 = load <8 x double>, ptr %189, align 64, !tbaa !26, !noalias !66
  %1124 = getelementptr inbounds nuw i8, ptr %807, i64 3200
  %1125 = load <8 x double>, ptr %1124, align 64, !tbaa !26, !noalias !66
  %1126 = icmp eq <8 x i64> %1122, zeroinitializer
  %1127 = select <8 x i1> %1126, <8 x double> %1125, <8 x double> %1123
  %1128 = getelementptr inbounds nuw i8, ptr %807, i64 3584
  %1129 = load <8 x double>, ptr %1128, align 64, !tbaa !26, !noalias !66
  %1130 = fsub <8 x double> splat (double 1.000000e+00), %1120
  %1131 = getelementptr inbounds nuw i8, ptr %807, i64 1984
  %1132 = load <8 x double>, ptr %1131, align 64, !tbaa !26, !noalias !66
  %1133 = getelementptr inbounds nuw i8, ptr %807, i64 8320
  %1134 = load <8 x i64>, ptr %1133, align 64, !tbaa !26, !noalias !66
  %1135 = fsub <8 x double> %1107, %1111
  %1136 = getelementptr inbounds nuw i8, ptr %807, i64 7808
  %1137 = load <8 x double>, ptr %1136, align 64, !tbaa !26, !noalias !66
  %1138 = fmul <8 x double> %1135, %1137
  %1139 = icmp eq <8 x i64> %1134, zeroinitializer
  %1140 = select <8 x i1> %1139, <8 x double> zeroinitializer, <8 x double> %1138
  %1141 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1130, <8 x double> %1132, <8 x double> %1140)
  %1142 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1129, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1143 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1129, <8 x double> %1142, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1144 = fdiv <8 x double> splat (double 1.000000e+00), %1143
  %1145 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1127, <8 x double> %1141, <8 x double> splat (double 1.000000e+00))
  %1146 = fdiv <8 x double> splat (double 1.000000e+00), %1145
  %1147 = load <8 x double>, ptr %190, align 64, !tbaa !26, !noalias !66
  %1148 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !66
  %1149 = select <8 x i1> %1126, <8 x double> %1148, <8 x double> %1147
  %1150 = fsub <8 x double> %1149, %1129
  %1151 = fmul <8 x double> %1150, %1146
  %1152 = fmul <8 x double> %1127, %1151
  %1153 = load <8 x double>, ptr %828, align 64, !tbaa !26, !noalias !66
  %1154 = getelementptr inbounds nuw i8, ptr %807, i64 3264
  %1155 = load <8 x double>, ptr %1154, align 64, !tbaa !26, !noalias !66
  %1156 = load <8 x double>, ptr %831, align 64, !tbaa !26, !noalias !66
  %1157 = getelementptr inbounds nuw i8, ptr %807, i64 4160
  %1158 = load <8 x double>, ptr %1157, align 64, !tbaa !26, !noalias !66
  %1159 = fmul <8 x double> %1156, %1158
  %1160 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1153, <8 x double> %1155, <8 x double> %1159)
  %1161 = load <8 x double>, ptr %834, align 64, !tbaa !26, !noalias !66
  %1162 = getelementptr inbounds nuw i8, ptr %807, i64 5056
  %1163 = load <8 x double>, ptr %1162, align 64, !tbaa !26, !noalias !66
  %1164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1161, <8 x double> %1163, <8 x double> %1160)
  %1165 = fdiv <8 x double> %1137, %1102
  %1166 = fcmp ule <8 x double> %1120, zeroinitializer
  %1167 = or <8 x i1> %1119, %1166
  %1168 = fmul <8 x double> %1115, %1132
  %1169 = select <8 x i1> %1167, <8 x double> zeroinitializer, <8 x double> %1168
  %1170 = select <8 x i1> %1139, <8 x double> %1169, <8 x double> %1165
  %1171 = fmul <8 x double> %1127, %1152
  %1172 = fmul <8 x double> %1146, %1171
  %1173 = fmul <8 x double> %1144, %1172
  %1174 = fmul <8 x double> %1173, %1170
  %1175 = fdiv <8 x double> %1174, %1153
  %1176 = fadd <8 x double> %1175, splat (double 1.000000e+00)
  %1177 = fdiv <8 x double> splat (double 1.000000e+00), %1176
  %1178 = getelementptr inbounds nuw i8, ptr %807, i64 3456
  %1179 = load <8 x double>, ptr %1178, align 64, !tbaa !26, !noalias !66
  %1180 = fsub <8 x double> %1152, %1179
  %1181 = load <8 x double>, ptr %845, align 64, !tbaa !26, !noalias !66
  %1182 = fsub <8 x double> %1164, %1181
  %1183 = fmul <8 x double> %1182, %1175
  %1184 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1180, <8 x double> %1144, <8 x double> %1183)
  %1185 = fmul <8 x double> %1184, %1177
  %1186 = getelementptr inbounds nuw i8, ptr %807, i64 6016
  %1187 = load <8 x double>, ptr %1186, align 64, !tbaa !26, !noalias !66
  %1188 = fcmp ule <8 x double> %1187, zeroinitializer
  %1189 = fcmp ule <8 x double> %1185, zeroinitializer
  %1190 = or <8 x i1> %1188, %1189
  %1191 = select <8 x i1> %1190, <8 x double> zeroinitializer, <8 x double> %1185
  %1192 = getelementptr inbounds nuw i8, ptr %807, i64 2176
  %1193 = load <8 x double>, ptr %1192, align 64, !tbaa !26, !noalias !66
  %1194 = fcmp ogt <8 x double> %1193, zeroinitializer
  %1195 = getelementptr inbounds nuw i8, ptr %807, i64 1024
  %1196 = load <8 x double>, ptr %1195, align 64, !tbaa !26, !noalias !66
  %1197 = bitcast <8 x i1> %1194 to i8
  %1198 = icmp eq i8 %1197, 0
  br i1 %1198, label %1211, label %1199

1199:                                             ; preds = %1100
  %1200 = getelementptr inbounds nuw i8, ptr %807, i64 3648
  %1201 = load <8 x double>, ptr %1200, align 64, !tbaa !26, !noalias !66
  %1202 = fadd <8 x double> %1151, %1201
  %1203 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1202)
  %1204 = fcmp ogt <8 x double> %1193, splat (double 1.000000e-09)
  %1205 = select <8 x i1> %1204, <8 x double> %1193, <8 x double> splat (double 1.000000e-09)
  %1206 = fdiv <8 x double> %1203, %1205
  %1207 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1206)
  %1208 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1207)
  %1209 = select <8 x i1> %1194, <8 x double> %1208, <8 x double> splat (double 1.000000e+00)
  %1210 = fmul <8 x double> %1196, %1209
  br label %1211

1211:                                             ; preds = %1100, %1199
  %1212 = phi <8 x double> [ %1210, %1199 ], [ %1196, %1100 ]
  %1213 = getelementptr inbounds nuw i8, ptr %807, i64 4096
  %1214 = load <8 x double>, ptr %1213, align 64, !tbaa !26, !noalias !66
  %1215 = getelementptr inbounds nuw i8, ptr %807, i64 4992
  %1216 = load <8 x double>, ptr %1215, align 64, !tbaa !26, !noalias !66
  %1217 = fmul <8 x double> %1161, %1216
  %1218 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1156, <8 x double> %1214, <8 x double> %1217)
  %1219 = getelementptr inbounds nuw i8, ptr %807, i64 1216
  %1220 = load <8 x double>, ptr %1219, align 64, !tbaa !26, !noalias !66
  %1221 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1220, <8 x double> %1153, <8 x double> splat (double 1.000000e+00))
  %1222 = fdiv <8 x double> splat (double 1.000000e+00), %1221
  %1223 = fmul <8 x double> %1146, %1151
  %1224 = fmul <8 x double> %1144, %1223
  %1225 = fmul <8 x double> %1224, %1177
  %1226 = select <8 x i1> %1190, <8 x double> zeroinitializer, <8 x double> %1225
  %1227 = getelementptr inbounds nuw i8, ptr %807, i64 1088
  %1228 = load <8 x double>, ptr %1227, align 64, !tbaa !26, !noalias !66
  %1229 = fmul <8 x double> %1212, splat (double 2.500000e-01)
  %1230 = fmul <8 x double> %1141, %1229
  %1231 = fneg <8 x double> %1146
  %1232 = fmul <8 x double> %1230, %1231
  %1233 = select <8 x i1> %1194, <8 x double> %1232, <8 x double> splat (double -0.000000e+00)
  %1234 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1228, <8 x double> %1226, <8 x double> %1233)
  %1235 = fadd <8 x double> %1181, %1191
  %1236 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1228, <8 x double> %1235, <8 x double> %1212)
  %1237 = fneg <8 x double> %1220
  %1238 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1237, <8 x double> %1218, <8 x double> %1236)
  %1239 = fneg <8 x double> %1127
  %1240 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1222, <8 x double> %1238, <8 x double> %1239)
  %1241 = fmul <8 x double> %1222, %1234
  %1242 = fcmp olt <8 x double> %1241, splat (double 8.000000e-01)
  %1243 = select <8 x i1> %1242, <8 x double> %1241, <8 x double> splat (double 8.000000e-01)
  %1244 = fsub <8 x double> splat (double 1.000000e+00), %1243
  %1245 = fdiv <8 x double> %1240, %1244
  %1246 = fadd <8 x double> %1127, %1245
  %1247 = getelementptr inbounds nuw i8, ptr %807, i64 1152
  %1248 = load <8 x double>, ptr %1247, align 64, !tbaa !26, !noalias !66
  %1249 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1237, <8 x double> %1218, <8 x double> %1248)
  %1250 = fmul <8 x double> %1222, %1249
  %1251 = fcmp olt <8 x double> %1246, %1250
  %1252 = select <8 x i1> %1251, <8 x double> %1246, <8 x double> %1250
  %1253 = select <8 x i1> %1126, <8 x double> %1252, <8 x double> %1123
  %1254 = fsub <8 x double> %1253, %1127
  %1255 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1226, <8 x double> %1254, <8 x double> %1191)
  %1256 = fcmp ogt <8 x double> %1255, zeroinitializer
  %1257 = select <8 x i1> %1256, <8 x double> %1255, <8 x double> zeroinitializer
  %1258 = select <8 x i1> %721, <8 x double> %1125, <8 x double> %1253
  store <8 x double> %1258, ptr %1124, align 64, !tbaa !26
  %1259 = select <8 x i1> %721, <8 x double> %1187, <8 x double> %1257
  store <8 x double> %1259, ptr %1186, align 64, !tbaa !26
  %1260 = fadd <8 x double> %1181, %1259
  %1261 = fneg <8 x double> %1156
  %1262 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1261, <8 x double> %1158, <8 x double> %1260)
  %1263 = fneg <8 x double> %1161
  %1264 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1263, <8 x double> %1163, <8 x double> %1262)
  %1265 = fdiv <8 x double> %1264, %1153
  %1266 = load <8 x double>, ptr %865, align 64, !tbaa !26, !noalias !71
  %1267 = fsub <8 x double> %1266, %1265
  %1268 = getelementptr inbounds nuw i8, ptr %807, i64 4032
  %1269 = load <8 x double>, ptr %1268, align 64, !tbaa !26, !noalias !71
  %1270 = fsub <8 x double> %1269, %1101
  %1271 = getelementptr inbounds nuw i8, ptr %807, i64 3904
  %1272 = load <8 x double>, ptr %1271, align 64, !tbaa !26, !noalias !71
  %1273 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1134)
  %1274 = icmp eq i64 %1273, 0
  br i1 %1274, label %1397, label %1275

1275:                                             ; preds = %1211
  %1276 = fcmp ogt <8 x double> %1270, %1267
  %1277 = getelementptr inbounds nuw i8, ptr %807, i64 7680
  %1278 = load <8 x double>, ptr %1277, align 64, !tbaa !26, !noalias !71
  %1279 = fcmp oeq <8 x double> %1278, zeroinitializer
  %1280 = select <8 x i1> %1279, <8 x i1> %1276, <8 x i1> zeroinitializer
  %1281 = select <8 x i1> %1280, <8 x i64> %1134, <8 x i64> zeroinitializer
  %1282 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1281)
  %1283 = icmp eq i64 %1282, 0
  br i1 %1283, label %1352, label %1284

1284:                                             ; preds = %1275
  %1285 = fsub <8 x double> %1270, %1267
  %1286 = fdiv <8 x double> %1285, %1102
  %1287 = getelementptr inbounds nuw i8, ptr %807, i64 8552
  %1288 = load ptr, ptr %1287, align 8, !tbaa !69, !noalias !71
  %1289 = load i64, ptr %141, align 16, !tbaa !21, !noalias !71
  %1290 = add nsw i64 %1289, -1
  %1291 = getelementptr inbounds <8 x double>, ptr %1288, i64 %1290
  %1292 = load <8 x double>, ptr %1291, align 64, !tbaa !26, !noalias !71
  %1293 = icmp sgt i64 %1289, 1
  br i1 %1293, label %1294, label %1344

1294:                                             ; preds = %1284
  %1295 = getelementptr inbounds nuw i8, ptr %807, i64 8512
  %1296 = load i64, ptr %1295, align 64, !tbaa !31, !noalias !71
  %1297 = getelementptr inbounds nuw i8, ptr %807, i64 8608
  br label %1298

1298:                                             ; preds = %1294, %1341
  %1299 = phi <8 x double> [ %1272, %1294 ], [ %1336, %1341 ]
  %1300 = phi i64 [ %1290, %1294 ], [ %1342, %1341 ]
  %1301 = phi <8 x double> [ %1292, %1294 ], [ %1324, %1341 ]
  %1302 = phi <8 x i64> [ %1281, %1294 ], [ %1328, %1341 ]
  %1303 = phi <8 x double> [ %1286, %1294 ], [ %1335, %1341 ]
  %1304 = icmp slt i64 %1300, %1296
  br i1 %1304, label %1305, label %1311

1305:                                             ; preds = %1298
  %1306 = load ptr, ptr %1297, align 32, !tbaa !74, !noalias !71
  %1307 = getelementptr inbounds nuw <8 x double>, ptr %1306, i64 %1300
  %1308 = load <8 x double>, ptr %1307, align 64, !tbaa !26, !noalias !71
  %1309 = load <8 x double>, ptr %863, align 64, !tbaa !26, !noalias !71
  %1310 = fmul <8 x double> %1308, %1309
  br label %1319

1311:                                             ; preds = %1298
  %1312 = load <8 x double>, ptr %866, align 64, !tbaa !26, !noalias !71
  %1313 = load <8 x double>, ptr %863, align 64, !tbaa !26, !noalias !71
  %1314 = load ptr, ptr %1297, align 32, !tbaa !74, !noalias !71
  %1315 = getelementptr inbounds nuw <8 x double>, ptr %1314, i64 %1300
  %1316 = load <8 x double>, ptr %1315, align 64, !tbaa !26, !noalias !71
  %1317 = fsub <8 x double> %1312, %1313
  %1318 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1316, <8 x double> %1317, <8 x double> %1313)
  br label %1319

1319:                                             ; preds = %1305, %1311
  %1320 = phi <8 x double> [ %1310, %1305 ], [ %1318, %1311 ]
  %1321 = getelementptr inbounds nuw <8 x double>, ptr %1288, i64 %1300
  %1322 = load <8 x double>, ptr %1321, align 64, !tbaa !26, !noalias !71
  %1323 = icmp eq <8 x i64> %1302, zeroinitializer
  %1324 = select <8 x i1> %1323, <8 x double> %1301, <8 x double> %1322
  %1325 = fsub <8 x double> %1299, %1320
  %1326 = fmul <8 x double> %1325, %1324
  %1327 = fcmp olt <8 x double> %1326, %1303
  %1328 = select <8 x i1> %1327, <8 x i64> %1302, <8 x i64> zeroinitializer
  %1329 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1328)
  %1330 = icmp eq i64 %1329, 0
  br i1 %1330, label %1344, label %1331

1331:                                             ; preds = %1319
  %1332 = fneg <8 x double> %1324
  %1333 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1332, <8 x double> %1325, <8 x double> %1303)
  %1334 = icmp eq <8 x i64> %1328, zeroinitializer
  %1335 = select <8 x i1> %1334, <8 x double> %1303, <8 x double> %1333
  %1336 = select <8 x i1> %1334, <8 x double> %1299, <8 x double> %1320
  %1337 = icmp eq i64 %1300, 1
  br i1 %1337, label %1338, label %1341

1338:                                             ; preds = %1331
  %1339 = load <8 x double>, ptr %1288, align 64, !tbaa !26, !noalias !71
  %1340 = select <8 x i1> %1334, <8 x double> %1324, <8 x double> %1339
  br label %1344

1341:                                             ; preds = %1331
  %1342 = add nsw i64 %1300, -1
  %1343 = icmp sgt i64 %1300, 1
  br i1 %1343, label %1298, label %1344, !llvm.loop !75

1344:                                             ; preds = %1341, %1319, %1338, %1284
  %1345 = phi <8 x double> [ %1286, %1284 ], [ %1335, %1338 ], [ %1303, %1319 ], [ %1335, %1341 ]
  %1346 = phi <8 x double> [ %1272, %1284 ], [ %1336, %1338 ], [ %1299, %1319 ], [ %1336, %1341 ]
  %1347 = phi <8 x double> [ %1292, %1284 ], [ %1340, %1338 ], [ %1324, %1319 ], [ %1324, %1341 ]
  %1348 = fdiv <8 x double> %1345, %1347
  %1349 = fsub <8 x double> %1346, %1348
  %1350 = icmp eq <8 x i64> %1281, zeroinitializer
  %1351 = select <8 x i1> %1350, <8 x double> %1272, <8 x double> %1349
  br label %1352

1352:                                             ; preds = %1344, %1275
  %1353 = phi <8 x double> [ %1351, %1344 ], [ %1272, %1275 ]
  %1354 = getelementptr inbounds nuw i8, ptr %807, i64 2560
  %1355 = load <8 x double>, ptr %1354, align 64, !tbaa !26, !noalias !71
  %1356 = getelementptr inbounds nuw i8, ptr %807, i64 2624
  %1357 = load <8 x double>, ptr %1356, align 64, !tbaa !26, !noalias !71
  %1358 = getelementptr inbounds nuw i8, ptr %807, i64 2688
  %1359 = load <8 x double>, ptr %1358, align 64, !tbaa !26, !noalias !71
  %1360 = getelementptr inbounds nuw i8, ptr %807, i64 2752
  %1361 = load <8 x double>, ptr %1360, align 64, !tbaa !26, !noalias !71
  %1362 = fmul <8 x double> %1107, splat (double 2.000000e-05)
  br label %1363

1363:                                             ; preds = %1352, %1363
  %1364 = phi <8 x i64> [ splat (i64 -1), %1352 ], [ %1381, %1363 ]
  %1365 = phi i32 [ 0, %1352 ], [ %1382, %1363 ]
  %1366 = phi <8 x double> [ %1111, %1352 ], [ %1378, %1363 ]
  %1367 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1366, <8 x double> %1361, <8 x double> %1359)
  %1368 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1366, <8 x double> %1367, <8 x double> %1357)
  %1369 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1366, <8 x double> %1368, <8 x double> %1355)
  %1370 = fsub <8 x double> %1369, %1353
  %1371 = fmul <8 x double> %1366, splat (double 3.000000e+00)
  %1372 = fmul <8 x double> %1371, %1361
  %1373 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1359, <8 x double> splat (double 2.000000e+00), <8 x double> %1372)
  %1374 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1366, <8 x double> %1373, <8 x double> %1357)
  %1375 = fdiv <8 x double> %1370, %1374
  %1376 = fsub <8 x double> %1366, %1375
  %1377 = icmp eq <8 x i64> %1364, zeroinitializer
  %1378 = select <8 x i1> %1377, <8 x double> %1366, <8 x double> %1376
  %1379 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1375)
  %1380 = fcmp oge <8 x double> %1379, %1362
  %1381 = select <8 x i1> %1380, <8 x i64> %1364, <8 x i64> zeroinitializer
  %1382 = add nuw nsw i32 %1365, 1
  %1383 = icmp samesign ult i32 %1365, 3
  %1384 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1381)
  %1385 = icmp ne i64 %1384, 0
  %1386 = select i1 %1383, i1 %1385, i1 false
  br i1 %1386, label %1363, label %1387, !llvm.loop !76

1387:                                             ; preds = %1363
  %1388 = fmul <8 x double> %1107, splat (double 2.800000e-01)
  %1389 = fcmp ogt <8 x double> %1378, %1388
  %1390 = select <8 x i1> %1389, <8 x double> %1378, <8 x double> %1388
  %1391 = fcmp olt <8 x double> %1390, %1107
  %1392 = select <8 x i1> %1391, <8 x double> %1390, <8 x double> %1107
  %1393 = select <8 x i1> %1139, <8 x double> %1111, <8 x double> %1392
  %1394 = fcmp olt <8 x double> %1270, %1267
  %1395 = select <8 x i1> %1139, <8 x i1> splat (i1 true), <8 x i1> %1394
  %1396 = select <8 x i1> %1395, <8 x double> %1270, <8 x double> %1267
  br label %1397

1397:                                             ; preds = %1211, %1387
  %1398 = phi <8 x double> [ %1396, %1387 ], [ %1270, %1211 ]
  %1399 = phi <8 x double> [ %1393, %1387 ], [ %1111, %1211 ]
  %1400 = phi <8 x double> [ %1353, %1387 ], [ %1272, %1211 ]
  %1401 = fsub <8 x double> %1267, %1398
  %1402 = select <8 x i1> %721, <8 x double> %1155, <8 x double> %1265
  store <8 x double> %1402, ptr %1154, align 64, !tbaa !26
  %1403 = select <8 x i1> %721, <8 x double> %1113, <8 x double> %1401
  store <8 x double> %1403, ptr %1112, align 64, !tbaa !26
  %1404 = getelementptr inbounds nuw i8, ptr %807, i64 3136
  %1405 = load <8 x double>, ptr %1404, align 64, !tbaa !26
  %1406 = select <8 x i1> %721, <8 x double> %1405, <8 x double> %1398
  store <8 x double> %1406, ptr %1404, align 64, !tbaa !26
  %1407 = getelementptr inbounds nuw i8, ptr %807, i64 3008
  %1408 = and <8 x i64> %1134, %561
  %1409 = load <8 x double>, ptr %1407, align 64, !tbaa !26
  %1410 = icmp eq <8 x i64> %1408, zeroinitializer
  %1411 = select <8 x i1> %1410, <8 x double> %1409, <8 x double> %1400
  store <8 x double> %1411, ptr %1407, align 64, !tbaa !26
  %1412 = select <8 x i1> %1410, <8 x double> %1111, <8 x double> %1399
  store <8 x double> %1412, ptr %841, align 64, !tbaa !26
  %1413 = add nuw nsw i64 %805, 1
  %1414 = load i64, ptr %178, align 8, !tbaa !20
  %1415 = icmp slt i64 %1413, %1414
  br i1 %1415, label %804, label %1429, !llvm.loop !77

1416:                                             ; preds = %804, %1416
  %1417 = phi i64 [ 0, %804 ], [ %1427, %1416 ]
  %1418 = getelementptr inbounds nuw [14 x <8 x double>], ptr %841, i64 0, i64 %1417
  %1419 = getelementptr inbounds nuw [14 x <8 x double>], ptr %842, i64 0, i64 %1417
  %1420 = load <8 x double>, ptr %1419, align 64, !tbaa !26
  %1421 = getelementptr inbounds nuw [14 x <8 x double>], ptr %843, i64 0, i64 %1417
  %1422 = load <8 x double>, ptr %1421, align 64, !tbaa !26
  %1423 = fsub <8 x double> %1420, %1422
  %1424 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %840, <8 x double> %1423, <8 x double> %1420)
  %1425 = load <8 x double>, ptr %1418, align 64, !tbaa !26
  %1426 = select <8 x i1> %721, <8 x double> %1425, <8 x double> %1424
  store <8 x double> %1426, ptr %1418, align 64, !tbaa !26
  %1427 = add nuw nsw i64 %1417, 1
  %1428 = icmp eq i64 %1427, 13
  br i1 %1428, label %844, label %1416, !llvm.loop !78

1429:                                             ; preds = %1397, %695
  %1430 = phi i64 [ %800, %695 ], [ %1414, %1397 ]
  %1431 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %1432 = fcmp ogt <8 x double> %1431, zeroinitializer
  %1433 = select <8 x i1> %1432, <8 x i64> %561, <8 x i64> zeroinitializer
  %1434 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1433)
  %1435 = icmp eq i64 %1434, 0
  br i1 %1435, label %1519, label %1436

1436:                                             ; preds = %1429
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1433, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1437 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %1438 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %1439 = fadd <8 x double> %1437, %1438
  store <8 x double> %1439, ptr %9, align 64, !tbaa !26
  %1440 = load ptr, ptr %191, align 8
  %1441 = load ptr, ptr %193, align 8
  %1442 = load ptr, ptr %194, align 8
  br label %1443

1443:                                             ; preds = %1511, %1436
  %1444 = phi i64 [ 0, %1436 ], [ %1512, %1511 ]
  %1445 = getelementptr inbounds nuw i64, ptr %7, i64 %1444
  %1446 = load i64, ptr %1445, align 8, !tbaa !30
  %1447 = icmp eq i64 %1446, 0
  br i1 %1447, label %1511, label %1448

1448:                                             ; preds = %1443
  %1449 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %1444
  %1450 = load i64, ptr %1449, align 8, !tbaa !30
  %1451 = shl nsw i64 %1450, 1
  %1452 = getelementptr inbounds i64, ptr %1440, i64 %1451
  %1453 = load i64, ptr %1452, align 8, !tbaa !30
  %1454 = shl nuw nsw i64 %1444, 1
  %1455 = getelementptr inbounds nuw [16 x i64], ptr %192, i64 0, i64 %1454
  %1456 = getelementptr inbounds i64, ptr %1442, i64 %1451
  %1457 = load i64, ptr %1456, align 8, !tbaa !30
  %1458 = shl nsw i64 %1457, 4
  %1459 = getelementptr inbounds i8, ptr %1441, i64 %1458
  %1460 = getelementptr inbounds nuw double, ptr %9, i64 %1444
  %1461 = load double, ptr %1460, align 8, !tbaa !44
  %1462 = load i64, ptr %1455, align 8, !tbaa !30
  %1463 = getelementptr i8, ptr %1459, i64 -16
  %1464 = icmp sgt i64 %1462, 0
  br i1 %1464, label %1465, label %1474

1465:                                             ; preds = %1448, %1471
  %1466 = phi i64 [ %1472, %1471 ], [ %1462, %1448 ]
  %1467 = shl i64 %1466, 4
  %1468 = getelementptr i8, ptr %1463, i64 %1467
  %1469 = load double, ptr %1468, align 8, !tbaa !44
  %1470 = fcmp ugt double %1461, %1469
  br i1 %1470, label %1474, label %1471

1471:                                             ; preds = %1465
  %1472 = add nsw i64 %1466, -1
  store i64 %1472, ptr %1455, align 8, !tbaa !30
  %1473 = icmp sgt i64 %1466, 1
  br i1 %1473, label %1465, label %1474, !llvm.loop !79

1474:                                             ; preds = %1471, %1465, %1448
  %1475 = phi i64 [ %1462, %1448 ], [ 0, %1471 ], [ %1466, %1465 ]
  %1476 = icmp slt i64 %1475, %1453
  br i1 %1476, label %1477, label %1486

1477:                                             ; preds = %1474, %1483
  %1478 = phi i64 [ %1484, %1483 ], [ %1475, %1474 ]
  %1479 = shl nsw i64 %1478, 4
  %1480 = getelementptr inbounds i8, ptr %1459, i64 %1479
  %1481 = load double, ptr %1480, align 8, !tbaa !44
  %1482 = fcmp ule double %1461, %1481
  br i1 %1482, label %1491, label %1483

1483:                                             ; preds = %1477
  %1484 = add i64 %1478, 1
  store i64 %1484, ptr %1455, align 8, !tbaa !30
  %1485 = icmp eq i64 %1484, %1453
  br i1 %1485, label %1486, label %1477, !llvm.loop !80

1486:                                             ; preds = %1483, %1474
  %1487 = shl i64 %1453, 4
  %1488 = getelementptr i8, ptr %1459, i64 %1487
  %1489 = getelementptr i8, ptr %1488, i64 -8
  %1490 = load double, ptr %1489, align 8, !tbaa !44
  br label %1508

1491:                                             ; preds = %1477
  %1492 = shl nsw i64 %1478, 1
  %1493 = or disjoint i64 %1492, 1
  %1494 = getelementptr inbounds double, ptr %1459, i64 %1493
  %1495 = load double, ptr %1494, align 8, !tbaa !44
  %1496 = icmp sgt i64 %1478, 0
  br i1 %1496, label %1497, label %1508

1497:                                             ; preds = %1491
  %1498 = getelementptr inbounds nuw i8, ptr %1459, i64 %1479
  %1499 = getelementptr i8, ptr %1498, i64 -8
  %1500 = load double, ptr %1499, align 8, !tbaa !44
  %1501 = getelementptr i8, ptr %1498, i64 -16
  %1502 = load double, ptr %1501, align 8, !tbaa !44
  %1503 = fsub double %1461, %1502
  %1504 = fsub double %1481, %1502
  %1505 = fdiv double %1503, %1504
  %1506 = fsub double %1495, %1500
  %1507 = tail call double @llvm.fmuladd.f64(double %1505, double %1506, double %1500)
  br label %1508

1508:                                             ; preds = %1497, %1491, %1486
  %1509 = phi double [ %1507, %1497 ], [ %1495, %1491 ], [ %1490, %1486 ]
  %1510 = getelementptr inbounds nuw double, ptr %8, i64 %1444
  store double %1509, ptr %1510, align 8, !tbaa !44
  br label %1511

1511:                                             ; preds = %1508, %1443
  %1512 = add nuw nsw i64 %1444, 1
  %1513 = icmp eq i64 %1512, 8
  br i1 %1513, label %1514, label %1443, !llvm.loop !81

1514:                                             ; preds = %1511
  %1515 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1516 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %1517 = icmp eq <8 x i64> %1433, zeroinitializer
  %1518 = select <8 x i1> %1517, <8 x double> %1516, <8 x double> %1515
  store <8 x double> %1518, ptr %187, align 64, !tbaa !26
  br label %1519

1519:                                             ; preds = %1429, %1514, %559
  %1520 = phi i64 [ %1430, %1429 ], [ %1430, %1514 ], [ %564, %559 ]
  %1521 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %1522 = icmp eq <8 x i64> %561, zeroinitializer
  %1523 = select <8 x i1> %1522, <8 x double> %1521, <8 x double> zeroinitializer
  store <8 x double> %1523, ptr %195, align 64, !tbaa !26
  %1524 = icmp sgt i64 %1520, 0
  br i1 %1524, label %1527, label %1525

1525:                                             ; preds = %1519
  %1526 = load <8 x double>, ptr %197, align 64, !tbaa !26
  br label %2379

1527:                                             ; preds = %1519
  %1528 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %1529 = xor <8 x i64> %561, splat (i64 -1)
  %1530 = and <8 x i64> %1528, %1529
  %1531 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1530)
  %1532 = icmp eq i64 %1531, 0
  %1533 = icmp eq <8 x i64> %1530, zeroinitializer
  br label %1537

1534:                                             ; preds = %2373
  %1535 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %1536 = icmp sgt i64 %2377, 0
  br i1 %1536, label %2385, label %2379

1537:                                             ; preds = %1527, %2373
  %1538 = phi i64 [ 0, %1527 ], [ %2376, %2373 ]
  %1539 = load ptr, ptr %151, align 8, !tbaa !28
  %1540 = getelementptr inbounds nuw %struct.Piece, ptr %1539, i64 %1538
  br i1 %1532, label %1541, label %1568

1541:                                             ; preds = %1537
  %1542 = getelementptr inbounds nuw i8, ptr %1540, i64 8448
  %1543 = load <8 x i64>, ptr %1542, align 64, !tbaa !26
  %1544 = getelementptr inbounds nuw i8, ptr %1540, i64 3072
  %1545 = load <8 x double>, ptr %1544, align 64, !tbaa !26
  %1546 = getelementptr inbounds nuw i8, ptr %1540, i64 7744
  %1547 = load <8 x double>, ptr %1546, align 64, !tbaa !26
  %1548 = getelementptr inbounds nuw i8, ptr %1540, i64 5696
  %1549 = load <8 x double>, ptr %1548, align 64, !tbaa !26
  %1550 = getelementptr inbounds nuw i8, ptr %1540, i64 5760
  %1551 = load <8 x double>, ptr %1550, align 64, !tbaa !26
  %1552 = getelementptr inbounds nuw i8, ptr %1540, i64 8320
  %1553 = load <8 x i64>, ptr %1552, align 64, !tbaa !26
  %1554 = getelementptr inbounds nuw i8, ptr %1540, i64 1984
  %1555 = load <8 x double>, ptr %1554, align 64, !tbaa !26
  %1556 = load <8 x double>, ptr %1540, align 64, !tbaa !26
  %1557 = getelementptr inbounds nuw i8, ptr %1540, i64 2944
  %1558 = load <8 x double>, ptr %1557, align 64, !tbaa !26
  %1559 = getelementptr inbounds nuw i8, ptr %1540, i64 7808
  %1560 = load <8 x double>, ptr %1559, align 64, !tbaa !26
  %1561 = getelementptr inbounds nuw i8, ptr %1540, i64 5632
  %1562 = load <8 x double>, ptr %1561, align 64, !tbaa !26
  %1563 = getelementptr inbounds nuw i8, ptr %1540, i64 6016
  %1564 = load <8 x double>, ptr %1563, align 64, !tbaa !26
  %1565 = fmul <8 x double> %1545, %1547
  %1566 = fsub <8 x double> %1556, %1558
  %1567 = fmul <8 x double> %1566, %1560
  br label %1721

1568:                                             ; preds = %1537
  %1569 = getelementptr inbounds nuw i8, ptr %1540, i64 3200
  %1570 = getelementptr inbounds nuw i8, ptr %1540, i64 3072
  %1571 = load <8 x double>, ptr %1570, align 64, !tbaa !26, !noalias !82
  %1572 = getelementptr inbounds nuw i8, ptr %1540, i64 7744
  %1573 = load <8 x double>, ptr %1572, align 64, !tbaa !26, !noalias !82
  %1574 = fmul <8 x double> %1571, %1573
  %1575 = fcmp ogt <8 x double> %1574, zeroinitializer
  %1576 = select <8 x i1> %1575, <8 x double> %1574, <8 x double> zeroinitializer
  %1577 = fcmp uge <8 x double> %1576, splat (double 1.000000e+00)
  %1578 = select <8 x i1> %1577, <8 x double> splat (double 1.000000e+00), <8 x double> %1576
  %1579 = getelementptr inbounds nuw i8, ptr %1540, i64 8448
  %1580 = load <8 x i64>, ptr %1579, align 64, !tbaa !26, !noalias !82
  %1581 = load <8 x double>, ptr %189, align 64, !tbaa !26, !noalias !82
  %1582 = load <8 x double>, ptr %1569, align 64, !tbaa !26, !noalias !82
  %1583 = icmp eq <8 x i64> %1580, zeroinitializer
  %1584 = select <8 x i1> %1583, <8 x double> %1582, <8 x double> %1581
  %1585 = getelementptr inbounds nuw i8, ptr %1540, i64 3584
  %1586 = load <8 x double>, ptr %1585, align 64, !tbaa !26, !noalias !82
  %1587 = fsub <8 x double> splat (double 1.000000e+00), %1578
  %1588 = getelementptr inbounds nuw i8, ptr %1540, i64 1984
  %1589 = load <8 x double>, ptr %1588, align 64, !tbaa !26, !noalias !82
  %1590 = getelementptr inbounds nuw i8, ptr %1540, i64 8320
  %1591 = load <8 x i64>, ptr %1590, align 64, !tbaa !26, !noalias !82
  %1592 = load <8 x double>, ptr %1540, align 64, !tbaa !26, !noalias !82
  %1593 = getelementptr inbounds nuw i8, ptr %1540, i64 2944
  %1594 = load <8 x double>, ptr %1593, align 64, !tbaa !26, !noalias !82
  %1595 = fsub <8 x double> %1592, %1594
  %1596 = getelementptr inbounds nuw i8, ptr %1540, i64 7808
  %1597 = load <8 x double>, ptr %1596, align 64, !tbaa !26, !noalias !82
  %1598 = fmul <8 x double> %1595, %1597
  %1599 = icmp eq <8 x i64> %1591, zeroinitializer
  %1600 = select <8 x i1> %1599, <8 x double> zeroinitializer, <8 x double> %1598
  %1601 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1587, <8 x double> %1589, <8 x double> %1600)
  %1602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1586, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1603 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1586, <8 x double> %1602, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1604 = fdiv <8 x double> splat (double 1.000000e+00), %1603
  %1605 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1584, <8 x double> %1601, <8 x double> splat (double 1.000000e+00))
  %1606 = fdiv <8 x double> splat (double 1.000000e+00), %1605
  %1607 = load <8 x double>, ptr %190, align 64, !tbaa !26, !noalias !82
  %1608 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !82
  %1609 = select <8 x i1> %1583, <8 x double> %1608, <8 x double> %1607
  %1610 = fsub <8 x double> %1609, %1586
  %1611 = fmul <8 x double> %1610, %1606
  %1612 = fmul <8 x double> %1584, %1611
  %1613 = getelementptr inbounds nuw i8, ptr %1540, i64 5632
  %1614 = load <8 x double>, ptr %1613, align 64, !tbaa !26, !noalias !82
  %1615 = getelementptr inbounds nuw i8, ptr %1540, i64 3264
  %1616 = load <8 x double>, ptr %1615, align 64, !tbaa !26, !noalias !82
  %1617 = getelementptr inbounds nuw i8, ptr %1540, i64 5696
  %1618 = load <8 x double>, ptr %1617, align 64, !tbaa !26, !noalias !82
  %1619 = getelementptr inbounds nuw i8, ptr %1540, i64 4160
  %1620 = load <8 x double>, ptr %1619, align 64, !tbaa !26, !noalias !82
  %1621 = fmul <8 x double> %1618, %1620
  %1622 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1614, <8 x double> %1616, <8 x double> %1621)
  %1623 = getelementptr inbounds nuw i8, ptr %1540, i64 5760
  %1624 = load <8 x double>, ptr %1623, align 64, !tbaa !26, !noalias !82
  %1625 = getelementptr inbounds nuw i8, ptr %1540, i64 5056
  %1626 = load <8 x double>, ptr %1625, align 64, !tbaa !26, !noalias !82
  %1627 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1624, <8 x double> %1626, <8 x double> %1622)
  %1628 = getelementptr inbounds nuw i8, ptr %1540, i64 832
  %1629 = load <8 x double>, ptr %1628, align 64, !tbaa !26, !noalias !82
  %1630 = fdiv <8 x double> %1597, %1629
  %1631 = fcmp ule <8 x double> %1578, zeroinitializer
  %1632 = or <8 x i1> %1577, %1631
  %1633 = fmul <8 x double> %1573, %1589
  %1634 = select <8 x i1> %1632, <8 x double> zeroinitializer, <8 x double> %1633
  %1635 = select <8 x i1> %1599, <8 x double> %1634, <8 x double> %1630
  %1636 = fmul <8 x double> %1584, %1612
  %1637 = fmul <8 x double> %1606, %1636
  %1638 = fmul <8 x double> %1604, %1637
  %1639 = fmul <8 x double> %1638, %1635
  %1640 = fdiv <8 x double> %1639, %1614
  %1641 = fadd <8 x double> %1640, splat (double 1.000000e+00)
  %1642 = fdiv <8 x double> splat (double 1.000000e+00), %1641
  %1643 = getelementptr inbounds nuw i8, ptr %1540, i64 3456
  %1644 = load <8 x double>, ptr %1643, align 64, !tbaa !26, !noalias !82
  %1645 = fsub <8 x double> %1612, %1644
  %1646 = getelementptr inbounds nuw i8, ptr %1540, i64 6080
  %1647 = load <8 x double>, ptr %1646, align 64, !tbaa !26, !noalias !82
  %1648 = fsub <8 x double> %1627, %1647
  %1649 = fmul <8 x double> %1648, %1640
  %1650 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1645, <8 x double> %1604, <8 x double> %1649)
  %1651 = fmul <8 x double> %1650, %1642
  %1652 = getelementptr inbounds nuw i8, ptr %1540, i64 6016
  %1653 = load <8 x double>, ptr %1652, align 64, !tbaa !26, !noalias !82
  %1654 = fcmp ule <8 x double> %1653, zeroinitializer
  %1655 = fcmp ule <8 x double> %1651, zeroinitializer
  %1656 = or <8 x i1> %1654, %1655
  %1657 = select <8 x i1> %1656, <8 x double> zeroinitializer, <8 x double> %1651
  %1658 = getelementptr inbounds nuw i8, ptr %1540, i64 2176
  %1659 = load <8 x double>, ptr %1658, align 64, !tbaa !26, !noalias !82
  %1660 = fcmp ogt <8 x double> %1659, zeroinitializer
  %1661 = getelementptr inbounds nuw i8, ptr %1540, i64 1024
  %1662 = load <8 x double>, ptr %1661, align 64, !tbaa !26, !noalias !82
  %1663 = bitcast <8 x i1> %1660 to i8
  %1664 = icmp eq i8 %1663, 0
  br i1 %1664, label %1677, label %1665

1665:                                             ; preds = %1568
  %1666 = getelementptr inbounds nuw i8, ptr %1540, i64 3648
  %1667 = load <8 x double>, ptr %1666, align 64, !tbaa !26, !noalias !82
  %1668 = fadd <8 x double> %1611, %1667
  %1669 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1668)
  %1670 = fcmp ogt <8 x double> %1659, splat (double 1.000000e-09)
  %1671 = select <8 x i1> %1670, <8 x double> %1659, <8 x double> splat (double 1.000000e-09)
  %1672 = fdiv <8 x double> %1669, %1671
  %1673 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1672)
  %1674 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1673)
  %1675 = select <8 x i1> %1660, <8 x double> %1674, <8 x double> splat (double 1.000000e+00)
  %1676 = fmul <8 x double> %1662, %1675
  br label %1677

1677:                                             ; preds = %1665, %1568
  %1678 = phi <8 x double> [ %1676, %1665 ], [ %1662, %1568 ]
  %1679 = getelementptr inbounds nuw i8, ptr %1540, i64 4096
  %1680 = load <8 x double>, ptr %1679, align 64, !tbaa !26, !noalias !82
  %1681 = getelementptr inbounds nuw i8, ptr %1540, i64 4992
  %1682 = load <8 x double>, ptr %1681, align 64, !tbaa !26, !noalias !82
  %1683 = fmul <8 x double> %1624, %1682
  %1684 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1618, <8 x double> %1680, <8 x double> %1683)
  %1685 = getelementptr inbounds nuw i8, ptr %1540, i64 1216
  %1686 = load <8 x double>, ptr %1685, align 64, !tbaa !26, !noalias !82
  %1687 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1686, <8 x double> %1614, <8 x double> splat (double 1.000000e+00))
  %1688 = fdiv <8 x double> splat (double 1.000000e+00), %1687
  %1689 = fmul <8 x double> %1606, %1611
  %1690 = fmul <8 x double> %1604, %1689
  %1691 = fmul <8 x double> %1690, %1642
  %1692 = select <8 x i1> %1656, <8 x double> zeroinitializer, <8 x double> %1691
  %1693 = getelementptr inbounds nuw i8, ptr %1540, i64 1088
  %1694 = load <8 x double>, ptr %1693, align 64, !tbaa !26, !noalias !82
  %1695 = fmul <8 x double> %1678, splat (double 2.500000e-01)
  %1696 = fmul <8 x double> %1601, %1695
  %1697 = fneg <8 x double> %1606
  %1698 = fmul <8 x double> %1696, %1697
  %1699 = select <8 x i1> %1660, <8 x double> %1698, <8 x double> splat (double -0.000000e+00)
  %1700 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1694, <8 x double> %1692, <8 x double> %1699)
  %1701 = fadd <8 x double> %1647, %1657
  %1702 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1694, <8 x double> %1701, <8 x double> %1678)
  %1703 = fneg <8 x double> %1686
  %1704 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1703, <8 x double> %1684, <8 x double> %1702)
  %1705 = fneg <8 x double> %1584
  %1706 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1688, <8 x double> %1704, <8 x double> %1705)
  %1707 = fmul <8 x double> %1688, %1700
  %1708 = fcmp olt <8 x double> %1707, splat (double 8.000000e-01)
  %1709 = select <8 x i1> %1708, <8 x double> %1707, <8 x double> splat (double 8.000000e-01)
  %1710 = fsub <8 x double> splat (double 1.000000e+00), %1709
  %1711 = fdiv <8 x double> %1706, %1710
  %1712 = fadd <8 x double> %1584, %1711
  %1713 = getelementptr inbounds nuw i8, ptr %1540, i64 1152
  %1714 = load <8 x double>, ptr %1713, align 64, !tbaa !26, !noalias !82
  %1715 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1703, <8 x double> %1684, <8 x double> %1714)
  %1716 = fmul <8 x double> %1688, %1715
  %1717 = fcmp olt <8 x double> %1712, %1716
  %1718 = select <8 x i1> %1717, <8 x double> %1712, <8 x double> %1716
  %1719 = select <8 x i1> %1583, <8 x double> %1718, <8 x double> %1581
  %1720 = select <8 x i1> %1533, <8 x double> %1582, <8 x double> %1719
  store <8 x double> %1720, ptr %1569, align 64, !tbaa !26
  br label %1721

1721:                                             ; preds = %1541, %1677
  %1722 = phi <8 x double> [ %1567, %1541 ], [ %1598, %1677 ]
  %1723 = phi <8 x double> [ %1566, %1541 ], [ %1595, %1677 ]
  %1724 = phi <8 x double> [ %1565, %1541 ], [ %1574, %1677 ]
  %1725 = phi <8 x double> [ %1564, %1541 ], [ %1653, %1677 ]
  %1726 = phi <8 x double> [ %1562, %1541 ], [ %1614, %1677 ]
  %1727 = phi <8 x double> [ %1558, %1541 ], [ %1594, %1677 ]
  %1728 = phi <8 x double> [ %1555, %1541 ], [ %1589, %1677 ]
  %1729 = phi <8 x i64> [ %1553, %1541 ], [ %1591, %1677 ]
  %1730 = phi <8 x double> [ %1551, %1541 ], [ %1624, %1677 ]
  %1731 = phi <8 x double> [ %1549, %1541 ], [ %1618, %1677 ]
  %1732 = phi <8 x i64> [ %1543, %1541 ], [ %1580, %1677 ]
  %1733 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %1734 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %1735 = icmp eq <8 x i64> %1732, zeroinitializer
  %1736 = select <8 x i1> %1735, <8 x double> %1734, <8 x double> %1733
  %1737 = getelementptr inbounds nuw i8, ptr %1540, i64 5888
  store <8 x double> %1736, ptr %1737, align 64, !tbaa !26
  %1738 = fcmp ogt <8 x double> %1724, zeroinitializer
  %1739 = select <8 x i1> %1738, <8 x double> %1724, <8 x double> zeroinitializer
  %1740 = fcmp olt <8 x double> %1739, splat (double 1.000000e+00)
  %1741 = select <8 x i1> %1740, <8 x double> %1739, <8 x double> splat (double 1.000000e+00)
  %1742 = getelementptr inbounds nuw i8, ptr %1540, i64 2112
  %1743 = load <8 x double>, ptr %1742, align 64, !tbaa !26
  %1744 = fmul <8 x double> %1741, splat (double 4.180000e+03)
  %1745 = getelementptr inbounds nuw i8, ptr %1540, i64 896
  %1746 = load <8 x double>, ptr %1745, align 64, !tbaa !26
  %1747 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1744, <8 x double> %1746, <8 x double> %1743)
  %1748 = getelementptr inbounds nuw i8, ptr %1540, i64 5696
  %1749 = getelementptr inbounds nuw i8, ptr %1540, i64 4480
  %1750 = load <8 x double>, ptr %1749, align 64, !tbaa !26
  %1751 = getelementptr inbounds nuw i8, ptr %1540, i64 5760
  %1752 = getelementptr inbounds nuw i8, ptr %1540, i64 5376
  %1753 = load <8 x double>, ptr %1752, align 64, !tbaa !26
  %1754 = fmul <8 x double> %1730, %1753
  %1755 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1731, <8 x double> %1750, <8 x double> %1754)
  %1756 = getelementptr inbounds nuw i8, ptr %1540, i64 8320
  %1757 = fcmp ule <8 x double> %1743, zeroinitializer
  %1758 = getelementptr inbounds nuw i8, ptr %1540, i64 7296
  store <8 x double> %1741, ptr %1758, align 64, !tbaa !26
  %1759 = fsub <8 x double> splat (double 1.000000e+00), %1741
  %1760 = getelementptr inbounds nuw i8, ptr %1540, i64 2944
  %1761 = icmp eq <8 x i64> %1729, zeroinitializer
  %1762 = select <8 x i1> %1761, <8 x double> zeroinitializer, <8 x double> %1722
  %1763 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1759, <8 x double> %1728, <8 x double> %1762)
  %1764 = getelementptr inbounds nuw i8, ptr %1540, i64 8256
  store <8 x double> %1763, ptr %1764, align 64, !tbaa !26
  %1765 = getelementptr inbounds nuw i8, ptr %1540, i64 5632
  %1766 = fmul <8 x double> %1747, %1726
  %1767 = icmp eq <8 x i64> %1729, splat (i64 -1)
  %1768 = select <8 x i1> %1757, <8 x i1> splat (i1 true), <8 x i1> %1767
  %1769 = select <8 x i1> %1768, <8 x double> zeroinitializer, <8 x double> %1766
  %1770 = getelementptr inbounds nuw i8, ptr %1540, i64 7360
  store <8 x double> %1769, ptr %1770, align 64, !tbaa !26
  %1771 = fmul <8 x double> %1747, %1755
  %1772 = select <8 x i1> %1768, <8 x double> zeroinitializer, <8 x double> %1771
  %1773 = getelementptr inbounds nuw i8, ptr %1540, i64 7424
  store <8 x double> %1772, ptr %1773, align 64, !tbaa !26
  %1774 = getelementptr inbounds nuw i8, ptr %1540, i64 1920
  %1775 = load <8 x double>, ptr %1774, align 64, !tbaa !26
  %1776 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1759, <8 x double> %1775, <8 x double> %1723)
  %1777 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %1778 = fdiv <8 x double> splat (double 1.000000e+00), %1777
  %1779 = getelementptr inbounds nuw i8, ptr %1540, i64 2240
  %1780 = load <8 x double>, ptr %1779, align 64, !tbaa !26
  %1781 = fcmp ogt <8 x double> %1780, splat (double 1.000000e-30)
  %1782 = select <8 x i1> %1781, <8 x double> %1780, <8 x double> splat (double 1.000000e-30)
  %1783 = fdiv <8 x double> %1776, %1782
  %1784 = fadd <8 x double> %1778, %1783
  %1785 = getelementptr inbounds nuw i8, ptr %1540, i64 7488
  store <8 x double> %1784, ptr %1785, align 64, !tbaa !26
  %1786 = getelementptr inbounds nuw i8, ptr %1540, i64 7168
  store <8 x double> %1725, ptr %1786, align 64, !tbaa !26
  %1787 = getelementptr inbounds nuw i8, ptr %1540, i64 2560
  %1788 = load <8 x double>, ptr %1787, align 64, !tbaa !26
  %1789 = getelementptr inbounds nuw i8, ptr %1540, i64 2624
  %1790 = load <8 x double>, ptr %1789, align 64, !tbaa !26
  %1791 = getelementptr inbounds nuw i8, ptr %1540, i64 2688
  %1792 = load <8 x double>, ptr %1791, align 64, !tbaa !26
  %1793 = getelementptr inbounds nuw i8, ptr %1540, i64 2752
  %1794 = load <8 x double>, ptr %1793, align 64, !tbaa !26
  %1795 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1794, <8 x double> %1792)
  %1796 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1795, <8 x double> %1790)
  %1797 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1796, <8 x double> %1788)
  %1798 = getelementptr inbounds nuw i8, ptr %1540, i64 3776
  store <8 x double> %1797, ptr %1798, align 64, !tbaa !26
  %1799 = getelementptr inbounds nuw i8, ptr %1540, i64 4672
  %1800 = load <8 x double>, ptr %1799, align 64, !tbaa !26
  %1801 = fmul <8 x double> %1731, %1800
  %1802 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1797, <8 x double> %1801)
  %1803 = getelementptr inbounds nuw i8, ptr %1540, i64 5568
  %1804 = load <8 x double>, ptr %1803, align 64, !tbaa !26
  %1805 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1730, <8 x double> %1804, <8 x double> %1802)
  %1806 = fmul <8 x double> %1805, splat (double 5.000000e-01)
  %1807 = getelementptr inbounds nuw i8, ptr %1540, i64 7104
  store <8 x double> %1806, ptr %1807, align 64, !tbaa !26
  %1808 = getelementptr inbounds nuw i8, ptr %1540, i64 2304
  %1809 = load <8 x double>, ptr %1808, align 64, !tbaa !26
  %1810 = getelementptr inbounds nuw i8, ptr %1540, i64 2368
  %1811 = load <8 x double>, ptr %1810, align 64, !tbaa !26
  %1812 = getelementptr inbounds nuw i8, ptr %1540, i64 2432
  %1813 = load <8 x double>, ptr %1812, align 64, !tbaa !26
  %1814 = getelementptr inbounds nuw i8, ptr %1540, i64 2496
  %1815 = load <8 x double>, ptr %1814, align 64, !tbaa !26
  %1816 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1815, <8 x double> %1813)
  %1817 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1816, <8 x double> %1811)
  %1818 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1817, <8 x double> %1809)
  %1819 = getelementptr inbounds nuw i8, ptr %1540, i64 7040
  store <8 x double> %1818, ptr %1819, align 64, !tbaa !26
  %1820 = getelementptr inbounds nuw i8, ptr %1540, i64 8512
  %1821 = load i64, ptr %1820, align 64, !tbaa !31
  %1822 = icmp eq i64 %1821, 0
  br i1 %1822, label %1823, label %1835

1823:                                             ; preds = %1721
  %1824 = fdiv <8 x double> %1818, %1727
  %1825 = load i64, ptr %141, align 16, !tbaa !21
  %1826 = getelementptr inbounds nuw i8, ptr %1540, i64 8632
  %1827 = load ptr, ptr %1826, align 8, !tbaa !36
  %1828 = getelementptr inbounds <8 x double>, ptr %1827, i64 %1825
  %1829 = load <8 x double>, ptr %1828, align 64, !tbaa !26
  %1830 = fmul <8 x double> %1824, %1829
  %1831 = getelementptr inbounds nuw i8, ptr %1540, i64 64
  %1832 = load <8 x double>, ptr %1831, align 64, !tbaa !26
  %1833 = fsub <8 x double> %1727, %1832
  %1834 = fdiv <8 x double> splat (double 1.000000e+00), %1833
  br label %1858

1835:                                             ; preds = %1721
  %1836 = getelementptr inbounds nuw i8, ptr %1540, i64 64
  %1837 = load <8 x double>, ptr %1836, align 64, !tbaa !26
  %1838 = fsub <8 x double> %1727, %1837
  %1839 = fdiv <8 x double> splat (double 1.000000e+00), %1838
  %1840 = load i64, ptr %141, align 16, !tbaa !21
  %1841 = getelementptr inbounds nuw i8, ptr %1540, i64 8632
  %1842 = load ptr, ptr %1841, align 8, !tbaa !36
  %1843 = shl nsw i64 %1840, 8
  %1844 = getelementptr inbounds i8, ptr %1842, i64 %1843
  %1845 = load <8 x double>, ptr %1844, align 64, !tbaa !26
  %1846 = getelementptr inbounds nuw i8, ptr %1844, i64 64
  %1847 = load <8 x double>, ptr %1846, align 64, !tbaa !26
  %1848 = getelementptr inbounds nuw i8, ptr %1844, i64 128
  %1849 = load <8 x double>, ptr %1848, align 64, !tbaa !26
  %1850 = getelementptr inbounds nuw i8, ptr %1844, i64 192
  %1851 = load <8 x double>, ptr %1850, align 64, !tbaa !26
  %1852 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1851, <8 x double> %1849)
  %1853 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1852, <8 x double> %1847)
  %1854 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %1853, <8 x double> %1845)
  %1855 = icmp sgt i64 %1840, %1821
  %1856 = fmul <8 x double> %1839, %1854
  %1857 = select i1 %1855, <8 x double> %1856, <8 x double> %1854
  br label %1858

1858:                                             ; preds = %1823, %1835
  %1859 = phi <8 x double> [ %1834, %1823 ], [ %1839, %1835 ]
  %1860 = phi <8 x double> [ %1833, %1823 ], [ %1838, %1835 ]
  %1861 = phi <8 x double> [ %1830, %1823 ], [ %1857, %1835 ]
  %1862 = getelementptr inbounds nuw i8, ptr %1540, i64 3200
  %1863 = load <8 x double>, ptr %1862, align 64, !tbaa !26
  %1864 = getelementptr inbounds nuw i8, ptr %1540, i64 5952
  %1865 = load <8 x double>, ptr %1864, align 64, !tbaa !26
  %1866 = fcmp ogt <8 x double> %1723, splat (double 0x3D719799812DEA11)
  %1867 = select <8 x i1> %1866, <8 x double> %1723, <8 x double> splat (double 0x3D719799812DEA11)
  %1868 = getelementptr inbounds nuw i8, ptr %1540, i64 6912
  store <8 x double> %1859, ptr %1868, align 64, !tbaa !26
  %1869 = getelementptr inbounds nuw i8, ptr %1540, i64 704
  %1870 = load <8 x double>, ptr %1869, align 64, !tbaa !26
  %1871 = fdiv <8 x double> %1870, %1867
  %1872 = getelementptr inbounds nuw i8, ptr %1540, i64 6976
  store <8 x double> %1871, ptr %1872, align 64, !tbaa !26
  %1873 = getelementptr inbounds nuw i8, ptr %1540, i64 8520
  %1874 = load ptr, ptr %1873, align 8, !tbaa !59
  %1875 = load i64, ptr %141, align 16, !tbaa !21
  %1876 = getelementptr <8 x double>, ptr %1874, i64 %1875
  %1877 = getelementptr i8, ptr %1876, i64 -64
  %1878 = load <8 x double>, ptr %1877, align 64, !tbaa !26
  %1879 = fadd <8 x double> %1865, %1878
  %1880 = fmul <8 x double> %1879, splat (double 5.000000e-01)
  %1881 = getelementptr inbounds nuw i8, ptr %1540, i64 192
  %1882 = load <8 x double>, ptr %1881, align 64, !tbaa !26
  %1883 = getelementptr inbounds nuw i8, ptr %1540, i64 256
  %1884 = load <8 x double>, ptr %1883, align 64, !tbaa !26
  %1885 = getelementptr inbounds nuw i8, ptr %1540, i64 320
  %1886 = load <8 x double>, ptr %1885, align 64, !tbaa !26
  %1887 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1880, <8 x double> %1886, <8 x double> %1884)
  %1888 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1880, <8 x double> %1887, <8 x double> %1882)
  %1889 = fmul <8 x double> %1861, %1888
  %1890 = fmul <8 x double> %1741, %1889
  %1891 = getelementptr inbounds nuw i8, ptr %1540, i64 2048
  %1892 = load <8 x double>, ptr %1891, align 64, !tbaa !26
  %1893 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1890, <8 x double> %1892, <8 x double> splat (double 1.000000e+00))
  %1894 = fdiv <8 x double> splat (double 1.000000e+00), %1893
  %1895 = select <8 x i1> %1761, <8 x double> %1894, <8 x double> splat (double 1.000000e+00)
  %1896 = getelementptr inbounds nuw i8, ptr %1540, i64 7232
  store <8 x double> %1895, ptr %1896, align 64, !tbaa !26
  %1897 = fmul <8 x double> %1889, %1895
  %1898 = getelementptr inbounds nuw i8, ptr %1540, i64 6400
  store <8 x double> %1897, ptr %1898, align 64, !tbaa !26
  %1899 = fmul <8 x double> %1806, splat (double 2.000000e+00)
  %1900 = getelementptr inbounds nuw i8, ptr %1540, i64 384
  %1901 = load <8 x double>, ptr %1900, align 64, !tbaa !26
  %1902 = getelementptr inbounds nuw i8, ptr %1540, i64 448
  %1903 = load <8 x double>, ptr %1902, align 64, !tbaa !26
  %1904 = getelementptr inbounds nuw i8, ptr %1540, i64 512
  %1905 = load <8 x double>, ptr %1904, align 64, !tbaa !26
  %1906 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1865, <8 x double> %1905, <8 x double> %1903)
  %1907 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1865, <8 x double> %1906, <8 x double> %1901)
  %1908 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1899, <8 x double> %1907, <8 x double> %1897)
  %1909 = getelementptr inbounds nuw i8, ptr %1540, i64 6528
  store <8 x double> %1908, ptr %1909, align 64, !tbaa !26
  %1910 = fmul <8 x double> %1759, %1863
  %1911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1910, <8 x double> %1728, <8 x double> splat (double 1.000000e+00))
  %1912 = fdiv <8 x double> %1863, %1911
  %1913 = load i64, ptr %142, align 8, !tbaa !22
  %1914 = sitofp i64 %1913 to double
  %1915 = fmul double %1914, 2.000000e+00
  %1916 = insertelement <8 x double> poison, double %1915, i64 0
  %1917 = shufflevector <8 x double> %1916, <8 x double> poison, <8 x i32> zeroinitializer
  %1918 = fmul <8 x double> %1871, %1917
  %1919 = fadd <8 x double> %1912, %1918
  %1920 = fdiv <8 x double> %1912, %1919
  %1921 = fmul <8 x double> %1818, %1918
  %1922 = select <8 x i1> %1761, <8 x double> %1912, <8 x double> %1921
  %1923 = getelementptr inbounds nuw i8, ptr %1540, i64 6464
  store <8 x double> %1922, ptr %1923, align 64, !tbaa !26
  %1924 = fmul <8 x double> %1918, %1920
  %1925 = select <8 x i1> %1761, <8 x double> %1912, <8 x double> %1924
  %1926 = getelementptr inbounds nuw i8, ptr %1540, i64 6592
  store <8 x double> %1925, ptr %1926, align 64, !tbaa !26
  %1927 = select <8 x i1> %1761, <8 x double> splat (double 1.000000e+00), <8 x double> %1920
  %1928 = getelementptr inbounds nuw i8, ptr %1540, i64 6656
  store <8 x double> %1927, ptr %1928, align 64, !tbaa !26
  br i1 %1822, label %2090, label %1929

1929:                                             ; preds = %1858
  %1930 = getelementptr inbounds nuw i8, ptr %1540, i64 576
  %1931 = load <8 x double>, ptr %1930, align 64, !tbaa !26
  %1932 = getelementptr inbounds nuw i8, ptr %1540, i64 640
  %1933 = load <8 x double>, ptr %1932, align 64, !tbaa !26
  %1934 = getelementptr inbounds nuw i8, ptr %1540, i64 1536
  %1935 = load <8 x double>, ptr %1934, align 64, !tbaa !26
  %1936 = load i64, ptr %141, align 16, !tbaa !21
  %1937 = fsub <8 x double> %1797, %1935
  %1938 = fmul <8 x double> %1903, splat (double 5.000000e-01)
  %1939 = fmul <8 x double> %1905, splat (double 0x3FE5555555555555)
  %1940 = getelementptr inbounds nuw i8, ptr %1540, i64 8608
  %1941 = load ptr, ptr %1940, align 32, !tbaa !74
  %1942 = getelementptr inbounds nuw i8, ptr %1540, i64 8616
  %1943 = load ptr, ptr %1942, align 8, !tbaa !50
  %1944 = getelementptr inbounds nuw i8, ptr %1540, i64 8544
  %1945 = load ptr, ptr %1944, align 32, !tbaa !60
  %1946 = getelementptr inbounds nuw i8, ptr %1540, i64 8584
  %1947 = load ptr, ptr %1946, align 8, !tbaa !85
  %1948 = getelementptr inbounds nuw i8, ptr %1540, i64 8592
  %1949 = load ptr, ptr %1948, align 16, !tbaa !86
  %1950 = getelementptr inbounds nuw i8, ptr %1540, i64 8600
  %1951 = load ptr, ptr %1950, align 8, !tbaa !87
  %1952 = getelementptr inbounds nuw i8, ptr %1540, i64 8568
  %1953 = load ptr, ptr %1952, align 8, !tbaa !88
  %1954 = getelementptr inbounds nuw i8, ptr %1540, i64 8576
  %1955 = load ptr, ptr %1954, align 64, !tbaa !89
  %1956 = icmp sgt i64 %1936, 0
  br i1 %1956, label %1957, label %2203

1957:                                             ; preds = %1929
  %1958 = load <8 x double>, ptr %1874, align 64, !tbaa !26
  %1959 = getelementptr inbounds nuw i8, ptr %1540, i64 2880
  %1960 = load <8 x double>, ptr %1959, align 64, !tbaa !26
  %1961 = getelementptr inbounds nuw i8, ptr %1540, i64 2816
  %1962 = load <8 x double>, ptr %1961, align 64, !tbaa !26
  %1963 = fmul <8 x double> %1806, splat (double -2.000000e+00)
  %1964 = fmul <8 x double> %1963, %1865
  %1965 = fmul <8 x double> %1865, %1964
  %1966 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1865, <8 x double> %1939, <8 x double> %1938)
  %1967 = fmul <8 x double> %1965, %1966
  %1968 = getelementptr inbounds nuw i8, ptr %1540, i64 8632
  %1969 = fmul <8 x double> %1860, %1960
  %1970 = fdiv <8 x double> %1962, %1931
  br label %1971

1971:                                             ; preds = %1957, %2055
  %1972 = phi <8 x double> [ %1958, %1957 ], [ %2059, %2055 ]
  %1973 = phi <8 x double> [ zeroinitializer, %1957 ], [ %2056, %2055 ]
  %1974 = phi <8 x double> [ zeroinitializer, %1957 ], [ %2057, %2055 ]
  %1975 = phi <8 x double> [ zeroinitializer, %1957 ], [ %2058, %2055 ]
  %1976 = phi <8 x double> [ zeroinitializer, %1957 ], [ %2085, %2055 ]
  %1977 = phi <8 x double> [ zeroinitializer, %1957 ], [ %2087, %2055 ]
  %1978 = phi <8 x double> [ %1933, %1957 ], [ %2060, %2055 ]
  %1979 = phi i64 [ 0, %1957 ], [ %1981, %2055 ]
  %1980 = phi <8 x double> [ zeroinitializer, %1957 ], [ %2061, %2055 ]
  %1981 = add nuw nsw i64 %1979, 1
  %1982 = icmp slt i64 %1981, %1936
  br i1 %1982, label %1983, label %2052

1983:                                             ; preds = %1971
  %1984 = getelementptr inbounds nuw <8 x double>, ptr %1874, i64 %1981
  %1985 = load <8 x double>, ptr %1984, align 64, !tbaa !26
  %1986 = icmp slt i64 %1981, %1821
  br i1 %1986, label %1994, label %1987

1987:                                             ; preds = %1983
  %1988 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1985, <8 x double> %1905, <8 x double> %1903)
  %1989 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1985, <8 x double> %1988, <8 x double> %1901)
  %1990 = fneg <8 x double> %1985
  %1991 = fmul <8 x double> %1985, %1990
  %1992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1985, <8 x double> %1939, <8 x double> %1938)
  %1993 = fmul <8 x double> %1991, %1992
  br label %1994

1994:                                             ; preds = %1983, %1987
  %1995 = phi <8 x double> [ %1989, %1987 ], [ %1933, %1983 ]
  %1996 = phi <8 x double> [ %1993, %1987 ], [ zeroinitializer, %1983 ]
  %1997 = load i64, ptr %1820, align 64, !tbaa !31
  %1998 = icmp eq i64 %1997, 0
  %1999 = load ptr, ptr %1968, align 8, !tbaa !36
  br i1 %1998, label %2000, label %2004

2000:                                             ; preds = %1994
  %2001 = getelementptr inbounds nuw <8 x double>, ptr %1999, i64 %1981
  %2002 = load <8 x double>, ptr %2001, align 64, !tbaa !26
  %2003 = fmul <8 x double> %1859, %2002
  br label %2020

2004:                                             ; preds = %1994
  %2005 = shl nsw i64 %1981, 8
  %2006 = getelementptr inbounds nuw i8, ptr %1999, i64 %2005
  %2007 = load <8 x double>, ptr %2006, align 64, !tbaa !26
  %2008 = getelementptr inbounds nuw i8, ptr %2006, i64 64
  %2009 = load <8 x double>, ptr %2008, align 64, !tbaa !26
  %2010 = getelementptr inbounds nuw i8, ptr %2006, i64 128
  %2011 = load <8 x double>, ptr %2010, align 64, !tbaa !26
  %2012 = getelementptr inbounds nuw i8, ptr %2006, i64 192
  %2013 = load <8 x double>, ptr %2012, align 64, !tbaa !26
  %2014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %2013, <8 x double> %2011)
  %2015 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %2014, <8 x double> %2009)
  %2016 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1727, <8 x double> %2015, <8 x double> %2007)
  %2017 = icmp slt i64 %1979, %1997
  %2018 = fmul <8 x double> %1859, %2016
  %2019 = select i1 %2017, <8 x double> %2016, <8 x double> %2018
  br label %2020

2020:                                             ; preds = %2004, %2000
  %2021 = phi <8 x double> [ %2003, %2000 ], [ %2019, %2004 ]
  %2022 = icmp slt i64 %1979, %1997
  br i1 %2022, label %2029, label %2023

2023:                                             ; preds = %2020
  %2024 = fadd <8 x double> %1972, %1985
  %2025 = fmul <8 x double> %2024, splat (double 5.000000e-01)
  %2026 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2025, <8 x double> %1886, <8 x double> %1884)
  %2027 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2025, <8 x double> %2026, <8 x double> %1882)
  %2028 = fmul <8 x double> %2027, %2021
  br label %2039

2029:                                             ; preds = %2020
  %2030 = icmp slt i64 %1981, %1997
  br i1 %2030, label %2031, label %2033

2031:                                             ; preds = %2029
  %2032 = fmul <8 x double> %1931, %2021
  br label %2039

2033:                                             ; preds = %2029
  %2034 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1985, <8 x double> %1886, <8 x double> %1884)
  %2035 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1985, <8 x double> %2034, <8 x double> %1882)
  %2036 = fdiv <8 x double> %1969, %2035
  %2037 = fadd <8 x double> %1970, %2036
  %2038 = fdiv <8 x double> %2021, %2037
  br label %2039

2039:                                             ; preds = %2023, %2031, %2033
  %2040 = phi <8 x double> [ %2028, %2023 ], [ %2032, %2031 ], [ %2038, %2033 ]
  br i1 %1986, label %2045, label %2041

2041:                                             ; preds = %2039
  %2042 = getelementptr inbounds nuw <8 x double>, ptr %1941, i64 %1981
  %2043 = load <8 x double>, ptr %2042, align 64, !tbaa !26
  %2044 = fmul <8 x double> %1806, %2043
  br label %2045

2045:                                             ; preds = %2039, %2041
  %2046 = phi <8 x double> [ %2044, %2041 ], [ zeroinitializer, %2039 ]
  %2047 = fneg <8 x double> %2046
  %2048 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2047, <8 x double> %1978, <8 x double> %2040)
  %2049 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2046, <8 x double> %1995, <8 x double> %2040)
  %2050 = fadd <8 x double> %1980, %1996
  %2051 = fmul <8 x double> %2050, %2046
  br label %2055

2052:                                             ; preds = %1971
  %2053 = load <8 x double>, ptr %1898, align 64, !tbaa !26
  %2054 = load <8 x double>, ptr %1909, align 64, !tbaa !26
  br label %2055

2055:                                             ; preds = %2052, %2045
  %2056 = phi <8 x double> [ %2048, %2045 ], [ %2053, %2052 ]
  %2057 = phi <8 x double> [ %2049, %2045 ], [ %2054, %2052 ]
  %2058 = phi <8 x double> [ %2051, %2045 ], [ %1967, %2052 ]
  %2059 = phi <8 x double> [ %1985, %2045 ], [ %1972, %2052 ]
  %2060 = phi <8 x double> [ %1995, %2045 ], [ %1978, %2052 ]
  %2061 = phi <8 x double> [ %1996, %2045 ], [ %1980, %2052 ]
  %2062 = getelementptr inbounds nuw <8 x double>, ptr %1943, i64 %1979
  %2063 = load <8 x double>, ptr %2062, align 64, !tbaa !26
  %2064 = icmp slt i64 %1979, %1821
  %2065 = select i1 %2064, <8 x double> %1935, <8 x double> %1937
  %2066 = fmul <8 x double> %1726, %2065
  %2067 = fmul <8 x double> %2066, %2063
  %2068 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2067, <8 x double> %1978, <8 x double> %2056)
  %2069 = fadd <8 x double> %1974, %2068
  %2070 = fsub <8 x double> %2058, %1975
  %2071 = fneg <8 x double> %2067
  %2072 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2071, <8 x double> %1980, <8 x double> %2070)
  %2073 = getelementptr inbounds nuw <8 x double>, ptr %1945, i64 %1979
  %2074 = load <8 x double>, ptr %2073, align 64, !tbaa !26
  %2075 = fsub <8 x double> %2072, %2074
  %2076 = fneg <8 x double> %1973
  %2077 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2076, <8 x double> %1977, <8 x double> %2069)
  %2078 = fdiv <8 x double> splat (double 1.000000e+00), %2077
  %2079 = getelementptr inbounds nuw <8 x double>, ptr %1947, i64 %1979
  store <8 x double> %2075, ptr %2079, align 64, !tbaa !26
  %2080 = getelementptr inbounds nuw <8 x double>, ptr %1949, i64 %1979
  store <8 x double> %1973, ptr %2080, align 64, !tbaa !26
  %2081 = fadd <8 x double> %1973, %2057
  %2082 = fsub <8 x double> %2081, %2069
  %2083 = getelementptr inbounds nuw <8 x double>, ptr %1951, i64 %1979
  store <8 x double> %2082, ptr %2083, align 64, !tbaa !26
  %2084 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1973, <8 x double> %1976, <8 x double> %2075)
  %2085 = fmul <8 x double> %2084, %2078
  %2086 = getelementptr inbounds nuw <8 x double>, ptr %1953, i64 %1979
  store <8 x double> %2085, ptr %2086, align 64, !tbaa !26
  %2087 = fmul <8 x double> %2057, %2078
  %2088 = getelementptr inbounds nuw <8 x double>, ptr %1955, i64 %1979
  store <8 x double> %2087, ptr %2088, align 64, !tbaa !26
  %2089 = icmp eq i64 %1981, %1936
  br i1 %2089, label %2203, label %1971, !llvm.loop !90

2090:                                             ; preds = %1858
  %2091 = getelementptr inbounds nuw i8, ptr %1540, i64 1536
  %2092 = load <8 x double>, ptr %2091, align 64, !tbaa !26
  %2093 = load i64, ptr %141, align 16, !tbaa !21
  %2094 = fdiv <8 x double> %1818, %1727
  %2095 = fsub <8 x double> %1797, %2092
  %2096 = fmul <8 x double> %1726, %2095
  %2097 = fmul <8 x double> %1903, splat (double 5.000000e-01)
  %2098 = fmul <8 x double> %1905, splat (double 0x3FE5555555555555)
  %2099 = getelementptr inbounds nuw i8, ptr %1540, i64 8608
  %2100 = load ptr, ptr %2099, align 32, !tbaa !74
  %2101 = getelementptr inbounds nuw i8, ptr %1540, i64 8616
  %2102 = load ptr, ptr %2101, align 8, !tbaa !50
  %2103 = getelementptr inbounds nuw i8, ptr %1540, i64 8544
  %2104 = load ptr, ptr %2103, align 32, !tbaa !60
  %2105 = getelementptr inbounds nuw i8, ptr %1540, i64 8584
  %2106 = load ptr, ptr %2105, align 8, !tbaa !85
  %2107 = getelementptr inbounds nuw i8, ptr %1540, i64 8592
  %2108 = load ptr, ptr %2107, align 16, !tbaa !86
  %2109 = getelementptr inbounds nuw i8, ptr %1540, i64 8600
  %2110 = load ptr, ptr %2109, align 8, !tbaa !87
  %2111 = getelementptr inbounds nuw i8, ptr %1540, i64 8568
  %2112 = load ptr, ptr %2111, align 8, !tbaa !88
  %2113 = getelementptr inbounds nuw i8, ptr %1540, i64 8576
  %2114 = load ptr, ptr %2113, align 64, !tbaa !89
  %2115 = icmp sgt i64 %2093, 0
  br i1 %2115, label %2116, label %2203

2116:                                             ; preds = %2090
  %2117 = load <8 x double>, ptr %1874, align 64, !tbaa !26
  %2118 = fneg <8 x double> %2117
  %2119 = fmul <8 x double> %2117, %2118
  %2120 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2117, <8 x double> %2098, <8 x double> %2097)
  %2121 = fmul <8 x double> %2119, %2120
  %2122 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2117, <8 x double> %1905, <8 x double> %1903)
  %2123 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2117, <8 x double> %2122, <8 x double> %1901)
  %2124 = fmul <8 x double> %1806, splat (double -2.000000e+00)
  %2125 = fmul <8 x double> %2124, %1865
  %2126 = fmul <8 x double> %1865, %2125
  %2127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1865, <8 x double> %2098, <8 x double> %2097)
  %2128 = fmul <8 x double> %2126, %2127
  %2129 = getelementptr inbounds nuw i8, ptr %1540, i64 8632
  br label %2130

2130:                                             ; preds = %2116, %2171
  %2131 = phi <8 x double> [ %2117, %2116 ], [ %2175, %2171 ]
  %2132 = phi <8 x double> [ zeroinitializer, %2116 ], [ %2172, %2171 ]
  %2133 = phi <8 x double> [ zeroinitializer, %2116 ], [ %2173, %2171 ]
  %2134 = phi <8 x double> [ zeroinitializer, %2116 ], [ %2174, %2171 ]
  %2135 = phi <8 x double> [ zeroinitializer, %2116 ], [ %2198, %2171 ]
  %2136 = phi <8 x double> [ zeroinitializer, %2116 ], [ %2200, %2171 ]
  %2137 = phi <8 x double> [ %2123, %2116 ], [ %2176, %2171 ]
  %2138 = phi i64 [ 0, %2116 ], [ %2140, %2171 ]
  %2139 = phi <8 x double> [ %2121, %2116 ], [ %2177, %2171 ]
  %2140 = add nuw nsw i64 %2138, 1
  %2141 = icmp slt i64 %2140, %2093
  br i1 %2141, label %2142, label %2168

2142:                                             ; preds = %2130
  %2143 = getelementptr inbounds nuw <8 x double>, ptr %1874, i64 %2140
  %2144 = load <8 x double>, ptr %2143, align 64, !tbaa !26
  %2145 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2144, <8 x double> %1905, <8 x double> %1903)
  %2146 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2144, <8 x double> %2145, <8 x double> %1901)
  %2147 = fneg <8 x double> %2144
  %2148 = fmul <8 x double> %2144, %2147
  %2149 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2144, <8 x double> %2098, <8 x double> %2097)
  %2150 = fmul <8 x double> %2148, %2149
  %2151 = fadd <8 x double> %2131, %2144
  %2152 = fmul <8 x double> %2151, splat (double 5.000000e-01)
  %2153 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2152, <8 x double> %1886, <8 x double> %1884)
  %2154 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2152, <8 x double> %2153, <8 x double> %1882)
  %2155 = load ptr, ptr %2129, align 8, !tbaa !36
  %2156 = getelementptr inbounds nuw <8 x double>, ptr %2155, i64 %2140
  %2157 = load <8 x double>, ptr %2156, align 64, !tbaa !26
  %2158 = fmul <8 x double> %2094, %2157
  %2159 = fmul <8 x double> %2158, %2154
  %2160 = getelementptr inbounds nuw <8 x double>, ptr %2100, i64 %2140
  %2161 = load <8 x double>, ptr %2160, align 64, !tbaa !26
  %2162 = fmul <8 x double> %1806, %2161
  %2163 = fneg <8 x double> %2162
  %2164 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2163, <8 x double> %2137, <8 x double> %2159)
  %2165 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2162, <8 x double> %2146, <8 x double> %2159)
  %2166 = fadd <8 x double> %2139, %2150
  %2167 = fmul <8 x double> %2166, %2162
  br label %2171

2168:                                             ; preds = %2130
  %2169 = load <8 x double>, ptr %1898, align 64, !tbaa !26
  %2170 = load <8 x double>, ptr %1909, align 64, !tbaa !26
  br label %2171

2171:                                             ; preds = %2168, %2142
  %2172 = phi <8 x double> [ %2164, %2142 ], [ %2169, %2168 ]
  %2173 = phi <8 x double> [ %2165, %2142 ], [ %2170, %2168 ]
  %2174 = phi <8 x double> [ %2167, %2142 ], [ %2128, %2168 ]
  %2175 = phi <8 x double> [ %2144, %2142 ], [ %2131, %2168 ]
  %2176 = phi <8 x double> [ %2146, %2142 ], [ %2137, %2168 ]
  %2177 = phi <8 x double> [ %2150, %2142 ], [ %2139, %2168 ]
  %2178 = getelementptr inbounds nuw <8 x double>, ptr %2102, i64 %2138
  %2179 = load <8 x double>, ptr %2178, align 64, !tbaa !26
  %2180 = fmul <8 x double> %2096, %2179
  %2181 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2180, <8 x double> %2137, <8 x double> %2172)
  %2182 = fadd <8 x double> %2133, %2181
  %2183 = fsub <8 x double> %2174, %2134
  %2184 = fneg <8 x double> %2180
  %2185 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2184, <8 x double> %2139, <8 x double> %2183)
  %2186 = getelementptr inbounds nuw <8 x double>, ptr %2104, i64 %2138
  %2187 = load <8 x double>, ptr %2186, align 64, !tbaa !26
  %2188 = fsub <8 x double> %2185, %2187
  %2189 = fneg <8 x double> %2132
  %2190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2189, <8 x double> %2136, <8 x double> %2182)
  %2191 = fdiv <8 x double> splat (double 1.000000e+00), %2190
  %2192 = getelementptr inbounds nuw <8 x double>, ptr %2106, i64 %2138
  store <8 x double> %2188, ptr %2192, align 64, !tbaa !26
  %2193 = getelementptr inbounds nuw <8 x double>, ptr %2108, i64 %2138
  store <8 x double> %2132, ptr %2193, align 64, !tbaa !26
  %2194 = fadd <8 x double> %2132, %2173
  %2195 = fsub <8 x double> %2194, %2182
  %2196 = getelementptr inbounds nuw <8 x double>, ptr %2110, i64 %2138
  store <8 x double> %2195, ptr %2196, align 64, !tbaa !26
  %2197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2132, <8 x double> %2135, <8 x double> %2188)
  %2198 = fmul <8 x double> %2197, %2191
  %2199 = getelementptr inbounds nuw <8 x double>, ptr %2112, i64 %2138
  store <8 x double> %2198, ptr %2199, align 64, !tbaa !26
  %2200 = fmul <8 x double> %2173, %2191
  %2201 = getelementptr inbounds nuw <8 x double>, ptr %2114, i64 %2138
  store <8 x double> %2200, ptr %2201, align 64, !tbaa !26
  %2202 = icmp eq i64 %2140, %2093
  br i1 %2202, label %2203, label %2130, !llvm.loop !91

2203:                                             ; preds = %2055, %2171, %1929, %2090
  %2204 = getelementptr inbounds nuw i8, ptr %1540, i64 8128
  store <8 x double> splat (double 1.000000e+09), ptr %2204, align 64, !tbaa !26
  %2205 = getelementptr inbounds nuw i8, ptr %1540, i64 8568
  %2206 = load ptr, ptr %2205, align 8, !tbaa !88
  %2207 = load i64, ptr %141, align 16, !tbaa !21
  %2208 = add nsw i64 %2207, -1
  %2209 = getelementptr inbounds <8 x double>, ptr %2206, i64 %2208
  %2210 = load <8 x double>, ptr %2209, align 64, !tbaa !26
  %2211 = getelementptr inbounds nuw i8, ptr %1540, i64 8576
  %2212 = load ptr, ptr %2211, align 64, !tbaa !89
  %2213 = getelementptr inbounds <8 x double>, ptr %2212, i64 %2208
  %2214 = load <8 x double>, ptr %2213, align 64, !tbaa !26
  %2215 = load <8 x double>, ptr %1898, align 64, !tbaa !26
  %2216 = fmul <8 x double> %2210, %2215
  %2217 = fsub <8 x double> splat (double 1.000000e+00), %2214
  %2218 = fmul <8 x double> %2215, %2217
  %2219 = load <8 x double>, ptr %1923, align 64, !tbaa !26
  %2220 = load <8 x double>, ptr %1737, align 64, !tbaa !26
  %2221 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2219, <8 x double> %2220, <8 x double> %2216)
  %2222 = load <8 x double>, ptr %1773, align 64, !tbaa !26
  %2223 = fsub <8 x double> %2221, %2222
  %2224 = fadd <8 x double> %2218, %2219
  %2225 = load <8 x double>, ptr %1770, align 64, !tbaa !26
  %2226 = fadd <8 x double> %2224, %2225
  %2227 = load <8 x i64>, ptr %1756, align 64, !tbaa !26
  %2228 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2227)
  %2229 = icmp eq i64 %2228, 0
  %2230 = load i64, ptr %142, align 8, !tbaa !22
  br i1 %2229, label %2231, label %2246

2231:                                             ; preds = %2203
  %2232 = icmp slt i64 %2230, 0
  br i1 %2232, label %2237, label %2233

2233:                                             ; preds = %2231
  %2234 = getelementptr inbounds nuw i8, ptr %1540, i64 1408
  %2235 = getelementptr inbounds nuw i8, ptr %1540, i64 8688
  %2236 = load <8 x double>, ptr %2234, align 64, !tbaa !26
  br label %2239

2237:                                             ; preds = %2239, %2231
  %2238 = getelementptr inbounds nuw i8, ptr %1540, i64 6208
  store <8 x double> %2223, ptr %2238, align 64, !tbaa !26
  br label %2373

2239:                                             ; preds = %2233, %2239
  %2240 = phi i64 [ 0, %2233 ], [ %2243, %2239 ]
  %2241 = load ptr, ptr %2235, align 16, !tbaa !92
  %2242 = getelementptr inbounds nuw <8 x double>, ptr %2241, i64 %2240
  store <8 x double> %2236, ptr %2242, align 64, !tbaa !26
  %2243 = add nuw nsw i64 %2240, 1
  %2244 = load i64, ptr %142, align 8, !tbaa !22
  %2245 = icmp slt i64 %2240, %2244
  br i1 %2245, label %2239, label %2237, !llvm.loop !93

2246:                                             ; preds = %2203
  %2247 = load <8 x double>, ptr %1760, align 64, !tbaa !26
  %2248 = load <8 x double>, ptr %1786, align 64, !tbaa !26
  %2249 = getelementptr inbounds nuw i8, ptr %1540, i64 1280
  %2250 = load <8 x double>, ptr %2249, align 64, !tbaa !26
  %2251 = fmul <8 x double> %2248, %2250
  %2252 = load <8 x double>, ptr %1540, align 64, !tbaa !26
  %2253 = fsub <8 x double> %2252, %2247
  %2254 = sitofp i64 %2230 to double
  %2255 = insertelement <8 x double> poison, double %2254, i64 0
  %2256 = shufflevector <8 x double> %2255, <8 x double> poison, <8 x i32> zeroinitializer
  %2257 = fdiv <8 x double> %2253, %2256
  %2258 = load <8 x double>, ptr %1926, align 64, !tbaa !26
  %2259 = load <8 x double>, ptr %1928, align 64, !tbaa !26
  %2260 = getelementptr inbounds nuw i8, ptr %1540, i64 1408
  %2261 = load <8 x double>, ptr %2260, align 64, !tbaa !26
  %2262 = getelementptr inbounds nuw i8, ptr %1540, i64 8688
  %2263 = load ptr, ptr %2262, align 16, !tbaa !92
  %2264 = getelementptr inbounds <8 x double>, ptr %2263, i64 %2230
  store <8 x double> %2261, ptr %2264, align 64, !tbaa !26
  %2265 = icmp sgt i64 %2230, 0
  br i1 %2265, label %2266, label %2357

2266:                                             ; preds = %2246
  %2267 = fneg <8 x double> %2251
  %2268 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2267, <8 x double> %2259, <8 x double> %2258)
  %2269 = fsub <8 x double> splat (double 1.000000e+00), %2259
  %2270 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2251, <8 x double> %2269, <8 x double> %2258)
  %2271 = getelementptr inbounds nuw i8, ptr %1540, i64 8696
  %2272 = getelementptr inbounds nuw i8, ptr %1540, i64 8704
  %2273 = getelementptr inbounds nuw i8, ptr %1540, i64 768
  %2274 = fmul <8 x double> %2251, splat (double -5.000000e-01)
  %2275 = getelementptr inbounds nuw i8, ptr %1540, i64 8664
  %2276 = getelementptr inbounds nuw i8, ptr %1540, i64 8672
  %2277 = getelementptr inbounds nuw i8, ptr %1540, i64 8680
  br label %2278

2278:                                             ; preds = %2266, %2332
  %2279 = phi <8 x double> [ %2270, %2266 ], [ %2334, %2332 ]
  %2280 = phi <8 x double> [ %2268, %2266 ], [ %2335, %2332 ]
  %2281 = phi <8 x double> [ %2220, %2266 ], [ %2350, %2332 ]
  %2282 = phi <8 x double> [ zeroinitializer, %2266 ], [ %2353, %2332 ]
  %2283 = phi <8 x double> [ %2261, %2266 ], [ %2296, %2332 ]
  %2284 = phi i64 [ %2230, %2266 ], [ %2285, %2332 ]
  %2285 = add nsw i64 %2284, -1
  %2286 = uitofp nneg i64 %2285 to double
  %2287 = insertelement <8 x double> poison, double %2286, i64 0
  %2288 = shufflevector <8 x double> %2287, <8 x double> poison, <8 x i32> zeroinitializer
  %2289 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2288, <8 x double> %2257, <8 x double> %2247)
  %2290 = load <8 x double>, ptr %1787, align 64, !tbaa !26
  %2291 = load <8 x double>, ptr %1789, align 64, !tbaa !26
  %2292 = load <8 x double>, ptr %1791, align 64, !tbaa !26
  %2293 = load <8 x double>, ptr %1793, align 64, !tbaa !26
  %2294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2289, <8 x double> %2293, <8 x double> %2292)
  %2295 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2289, <8 x double> %2294, <8 x double> %2291)
  %2296 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2289, <8 x double> %2295, <8 x double> %2290)
  %2297 = load <8 x double>, ptr %1765, align 64, !tbaa !26
  %2298 = load <8 x double>, ptr %1748, align 64, !tbaa !26
  %2299 = load ptr, ptr %2271, align 8, !tbaa !51
  %2300 = getelementptr inbounds nuw <8 x double>, ptr %2299, i64 %2285
  %2301 = load <8 x double>, ptr %2300, align 64, !tbaa !26
  %2302 = fmul <8 x double> %2298, %2301
  %2303 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2297, <8 x double> %2296, <8 x double> %2302)
  %2304 = load <8 x double>, ptr %1751, align 64, !tbaa !26
  %2305 = load ptr, ptr %2272, align 64, !tbaa !61
  %2306 = getelementptr inbounds nuw <8 x double>, ptr %2305, i64 %2285
  %2307 = load <8 x double>, ptr %2306, align 64, !tbaa !26
  %2308 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2304, <8 x double> %2307, <8 x double> %2303)
  %2309 = fmul <8 x double> %2308, splat (double 5.000000e-01)
  %2310 = icmp eq i64 %2284, 1
  br i1 %2310, label %2326, label %2311

2311:                                             ; preds = %2278
  %2312 = load <8 x double>, ptr %2273, align 64, !tbaa !26
  %2313 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2309, <8 x double> %2312, <8 x double> %2274)
  %2314 = load <8 x double>, ptr %1872, align 64, !tbaa !26
  %2315 = fmul <8 x double> %2256, %2314
  %2316 = load <8 x double>, ptr %1808, align 64, !tbaa !26
  %2317 = load <8 x double>, ptr %1810, align 64, !tbaa !26
  %2318 = load <8 x double>, ptr %1812, align 64, !tbaa !26
  %2319 = load <8 x double>, ptr %1814, align 64, !tbaa !26
  %2320 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2289, <8 x double> %2319, <8 x double> %2318)
  %2321 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2289, <8 x double> %2320, <8 x double> %2317)
  %2322 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2289, <8 x double> %2321, <8 x double> %2316)
  %2323 = fmul <8 x double> %2315, %2322
  %2324 = fsub <8 x double> %2323, %2313
  %2325 = fadd <8 x double> %2313, %2323
  br label %2332

2326:                                             ; preds = %2278
  %2327 = load <8 x double>, ptr %1923, align 64, !tbaa !26
  %2328 = load <8 x double>, ptr %2273, align 64, !tbaa !26
  %2329 = fmul <8 x double> %2309, splat (double -2.000000e+00)
  %2330 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2329, <8 x double> %2328, <8 x double> %2327)
  %2331 = fadd <8 x double> %2251, %2330
  br label %2332

2332:                                             ; preds = %2326, %2311
  %2333 = phi <8 x double> [ %2312, %2311 ], [ %2328, %2326 ]
  %2334 = phi <8 x double> [ %2324, %2311 ], [ %2331, %2326 ]
  %2335 = phi <8 x double> [ %2325, %2311 ], [ %2327, %2326 ]
  %2336 = fsub <8 x double> %2283, %2296
  %2337 = fmul <8 x double> %2297, %2336
  %2338 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2337, <8 x double> %2333, <8 x double> %2279)
  %2339 = fadd <8 x double> %2335, %2338
  %2340 = fneg <8 x double> %2280
  %2341 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2340, <8 x double> %2282, <8 x double> %2339)
  %2342 = fdiv <8 x double> splat (double 1.000000e+00), %2341
  %2343 = load ptr, ptr %2262, align 16, !tbaa !92
  %2344 = getelementptr inbounds nuw <8 x double>, ptr %2343, i64 %2285
  store <8 x double> %2296, ptr %2344, align 64, !tbaa !26
  %2345 = load ptr, ptr %2275, align 8, !tbaa !64
  %2346 = getelementptr inbounds nuw <8 x double>, ptr %2345, i64 %2285
  %2347 = load <8 x double>, ptr %2346, align 64, !tbaa !26
  %2348 = fneg <8 x double> %2347
  %2349 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2280, <8 x double> %2281, <8 x double> %2348)
  %2350 = fmul <8 x double> %2342, %2349
  %2351 = load ptr, ptr %2276, align 32, !tbaa !94
  %2352 = getelementptr inbounds nuw <8 x double>, ptr %2351, i64 %2285
  store <8 x double> %2350, ptr %2352, align 64, !tbaa !26
  %2353 = fmul <8 x double> %2334, %2342
  %2354 = load ptr, ptr %2277, align 8, !tbaa !95
  %2355 = getelementptr inbounds nuw <8 x double>, ptr %2354, i64 %2285
  store <8 x double> %2353, ptr %2355, align 64, !tbaa !26
  %2356 = icmp samesign ugt i64 %2284, 1
  br i1 %2356, label %2278, label %2357, !llvm.loop !96

2357:                                             ; preds = %2332, %2246
  %2358 = load <8 x i64>, ptr %1756, align 64, !tbaa !26
  %2359 = load <8 x double>, ptr %1923, align 64, !tbaa !26
  %2360 = getelementptr inbounds nuw i8, ptr %1540, i64 8672
  %2361 = load ptr, ptr %2360, align 32, !tbaa !94
  %2362 = load <8 x double>, ptr %2361, align 64, !tbaa !26
  %2363 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2359, <8 x double> %2362, <8 x double> %2216)
  %2364 = icmp eq <8 x i64> %2358, zeroinitializer
  %2365 = select <8 x i1> %2364, <8 x double> %2223, <8 x double> %2363
  %2366 = getelementptr inbounds nuw i8, ptr %1540, i64 6208
  store <8 x double> %2365, ptr %2366, align 64, !tbaa !26
  %2367 = getelementptr inbounds nuw i8, ptr %1540, i64 8680
  %2368 = load ptr, ptr %2367, align 8, !tbaa !95
  %2369 = load <8 x double>, ptr %2368, align 64, !tbaa !26
  %2370 = fsub <8 x double> splat (double 1.000000e+00), %2369
  %2371 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2359, <8 x double> %2370, <8 x double> %2218)
  %2372 = select <8 x i1> %2364, <8 x double> %2226, <8 x double> %2371
  br label %2373

2373:                                             ; preds = %2237, %2357
  %2374 = phi <8 x double> [ %2226, %2237 ], [ %2372, %2357 ]
  %2375 = getelementptr inbounds nuw i8, ptr %1540, i64 6272
  store <8 x double> %2374, ptr %2375, align 64, !tbaa !26
  %2376 = add nuw nsw i64 %1538, 1
  %2377 = load i64, ptr %178, align 8, !tbaa !20
  %2378 = icmp slt i64 %2376, %2377
  br i1 %2378, label %1537, label %1534, !llvm.loop !97

2379:                                             ; preds = %2480, %1525, %1534
  %2380 = phi <8 x double> [ %1535, %1534 ], [ %1526, %1525 ], [ %1535, %2480 ]
  %2381 = phi i64 [ %2377, %1534 ], [ %1520, %1525 ], [ %2481, %2480 ]
  %2382 = fcmp ogt <8 x double> %2380, zeroinitializer
  %2383 = bitcast <8 x i1> %2382 to i8
  %2384 = icmp eq i8 %2383, 0
  br i1 %2384, label %2567, label %2484

2385:                                             ; preds = %1534, %2480
  %2386 = phi i64 [ %2481, %2480 ], [ %2377, %1534 ]
  %2387 = phi i64 [ %2482, %2480 ], [ 0, %1534 ]
  %2388 = load ptr, ptr %151, align 8, !tbaa !28
  %2389 = getelementptr inbounds nuw %struct.Piece, ptr %2388, i64 %2387
  %2390 = getelementptr inbounds nuw i8, ptr %2389, i64 8448
  %2391 = load <8 x i64>, ptr %2390, align 64, !tbaa !26
  %2392 = getelementptr inbounds nuw i8, ptr %2389, i64 2240
  %2393 = load <8 x double>, ptr %2392, align 64, !tbaa !26
  %2394 = fcmp ogt <8 x double> %2393, zeroinitializer
  %2395 = select <8 x i1> %2394, <8 x i64> %2391, <8 x i64> zeroinitializer
  %2396 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2395)
  %2397 = icmp eq i64 %2396, 0
  br i1 %2397, label %2480, label %2398

2398:                                             ; preds = %2385
  %2399 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2400 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2399, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2401 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2399, <8 x double> %2400, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2402 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2403 = getelementptr inbounds nuw i8, ptr %2389, i64 6208
  %2404 = load <8 x double>, ptr %2403, align 64, !tbaa !26
  %2405 = getelementptr inbounds nuw i8, ptr %2389, i64 6272
  %2406 = load <8 x double>, ptr %2405, align 64, !tbaa !26
  %2407 = fdiv <8 x double> %2404, %2406
  %2408 = fcmp olt <8 x double> %2407, %2399
  %2409 = select <8 x i1> %2408, <8 x double> %2407, <8 x double> %2399
  %2410 = getelementptr inbounds nuw i8, ptr %2389, i64 3584
  %2411 = load <8 x double>, ptr %2410, align 64, !tbaa !26
  %2412 = fcmp olt <8 x double> %2411, %2409
  %2413 = select <8 x i1> %2412, <8 x double> %2411, <8 x double> %2409
  %2414 = fneg <8 x double> %2406
  %2415 = getelementptr inbounds nuw i8, ptr %2389, i64 7488
  %2416 = load <8 x double>, ptr %2415, align 64, !tbaa !26
  br label %2420

2417:                                             ; preds = %2420
  %2418 = getelementptr inbounds nuw i8, ptr %2389, i64 6336
  store <8 x double> %2471, ptr %2418, align 64, !tbaa !26
  %2419 = load i64, ptr %178, align 8, !tbaa !20
  br label %2480

2420:                                             ; preds = %2398, %2420
  %2421 = phi <8 x i64> [ %2395, %2398 ], [ %2474, %2420 ]
  %2422 = phi i32 [ 0, %2398 ], [ %2475, %2420 ]
  %2423 = phi <8 x double> [ %2413, %2398 ], [ %2471, %2420 ]
  %2424 = fadd <8 x double> %2423, splat (double 2.731500e+02)
  %2425 = fcmp ogt <8 x double> %2423, zeroinitializer
  %2426 = select <8 x i1> %2425, <8 x double> %2423, <8 x double> zeroinitializer
  %2427 = fadd <8 x double> %2426, splat (double 2.731500e+02)
  %2428 = fadd <8 x double> %2427, splat (double 0xC08451671D164BD4)
  %2429 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2428
  %2430 = fsub <8 x double> %2427, %2429
  %2431 = fadd <8 x double> %2430, splat (double 0x40923C3565924845)
  %2432 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2430, <8 x double> %2431, <8 x double> splat (double 0xC12619EA558539E6))
  %2433 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2430, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2434 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2430, <8 x double> %2433, <8 x double> splat (double 0xC148A99584203885))
  %2435 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2430, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2436 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2430, <8 x double> %2435, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2437 = fmul <8 x double> %2436, splat (double 2.000000e+00)
  %2438 = fmul <8 x double> %2432, splat (double 4.000000e+00)
  %2439 = fneg <8 x double> %2436
  %2440 = fmul <8 x double> %2438, %2439
  %2441 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2434, <8 x double> %2434, <8 x double> %2440)
  %2442 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2441)
  %2443 = fsub <8 x double> %2442, %2434
  %2444 = fdiv <8 x double> %2437, %2443
  %2445 = fmul <8 x double> %2444, %2444
  %2446 = fmul <8 x double> %2445, splat (double 1.000000e+06)
  %2447 = fmul <8 x double> %2445, %2446
  %2448 = fmul <8 x double> %2424, splat (double 4.615260e+02)
  %2449 = fdiv <8 x double> %2447, %2448
  %2450 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2414, <8 x double> %2423, <8 x double> %2404)
  %2451 = fsub <8 x double> %2449, %2402
  %2452 = fcmp ogt <8 x double> %2451, zeroinitializer
  %2453 = select <8 x i1> %2452, <8 x double> %2451, <8 x double> zeroinitializer
  %2454 = fmul <8 x double> %2401, %2453
  %2455 = fdiv <8 x double> %2454, %2416
  %2456 = fsub <8 x double> %2450, %2455
  %2457 = fmul <8 x double> %2401, %2449
  %2458 = fdiv <8 x double> %2401, %2448
  %2459 = fadd <8 x double> %2458, splat (double -1.000000e+00)
  %2460 = fmul <8 x double> %2459, %2457
  %2461 = fdiv <8 x double> %2460, %2424
  %2462 = fdiv <8 x double> %2461, %2416
  %2463 = fcmp ule <8 x double> %2449, %2402
  %2464 = select <8 x i1> %2463, <8 x double> zeroinitializer, <8 x double> %2462
  %2465 = fsub <8 x double> %2414, %2464
  %2466 = fdiv <8 x double> %2456, %2465
  %2467 = fsub <8 x double> %2423, %2466
  %2468 = fcmp olt <8 x double> %2467, %2409
  %2469 = select <8 x i1> %2468, <8 x double> %2467, <8 x double> %2409
  %2470 = icmp eq <8 x i64> %2421, zeroinitializer
  %2471 = select <8 x i1> %2470, <8 x double> %2423, <8 x double> %2469
  %2472 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2466)
  %2473 = fcmp oge <8 x double> %2472, splat (double 1.000000e-05)
  %2474 = select <8 x i1> %2473, <8 x i64> %2421, <8 x i64> zeroinitializer
  %2475 = add nuw nsw i32 %2422, 1
  %2476 = icmp samesign ult i32 %2422, 7
  %2477 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2474)
  %2478 = icmp ne i64 %2477, 0
  %2479 = select i1 %2476, i1 %2478, i1 false
  br i1 %2479, label %2420, label %2417, !llvm.loop !98

2480:                                             ; preds = %2385, %2417
  %2481 = phi i64 [ %2386, %2385 ], [ %2419, %2417 ]
  %2482 = add nuw nsw i64 %2387, 1
  %2483 = icmp slt i64 %2482, %2481
  br i1 %2483, label %2385, label %2379, !llvm.loop !99

2484:                                             ; preds = %2379
  %2485 = sext <8 x i1> %2382 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2485, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %2486 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %2487 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2488 = fadd <8 x double> %2486, %2487
  store <8 x double> %2488, ptr %6, align 64, !tbaa !26
  %2489 = load ptr, ptr %191, align 8
  %2490 = load ptr, ptr %193, align 8
  %2491 = load ptr, ptr %194, align 8
  br label %2492

2492:                                             ; preds = %2562, %2484
  %2493 = phi i64 [ 0, %2484 ], [ %2563, %2562 ]
  %2494 = getelementptr inbounds nuw i64, ptr %4, i64 %2493
  %2495 = load i64, ptr %2494, align 8, !tbaa !30
  %2496 = icmp eq i64 %2495, 0
  br i1 %2496, label %2562, label %2497

2497:                                             ; preds = %2492
  %2498 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %2493
  %2499 = load i64, ptr %2498, align 8, !tbaa !30
  %2500 = shl nsw i64 %2499, 1
  %2501 = or disjoint i64 %2500, 1
  %2502 = getelementptr inbounds i64, ptr %2489, i64 %2501
  %2503 = load i64, ptr %2502, align 8, !tbaa !30
  %2504 = shl nuw nsw i64 %2493, 1
  %2505 = or disjoint i64 %2504, 1
  %2506 = getelementptr inbounds nuw [16 x i64], ptr %192, i64 0, i64 %2505
  %2507 = getelementptr inbounds i64, ptr %2491, i64 %2501
  %2508 = load i64, ptr %2507, align 8, !tbaa !30
  %2509 = shl nsw i64 %2508, 4
  %2510 = getelementptr inbounds i8, ptr %2490, i64 %2509
  %2511 = getelementptr inbounds nuw double, ptr %6, i64 %2493
  %2512 = load double, ptr %2511, align 8, !tbaa !44
  %2513 = load i64, ptr %2506, align 8, !tbaa !30
  %2514 = getelementptr i8, ptr %2510, i64 -16
  %2515 = icmp sgt i64 %2513, 0
  br i1 %2515, label %2516, label %2525

2516:                                             ; preds = %2497, %2522
  %2517 = phi i64 [ %2523, %2522 ], [ %2513, %2497 ]
  %2518 = shl i64 %2517, 4
  %2519 = getelementptr i8, ptr %2514, i64 %2518
  %2520 = load double, ptr %2519, align 8, !tbaa !44
  %2521 = fcmp ugt double %2512, %2520
  br i1 %2521, label %2525, label %2522

2522:                                             ; preds = %2516
  %2523 = add nsw i64 %2517, -1
  store i64 %2523, ptr %2506, align 8, !tbaa !30
  %2524 = icmp sgt i64 %2517, 1
  br i1 %2524, label %2516, label %2525, !llvm.loop !79

2525:                                             ; preds = %2522, %2516, %2497
  %2526 = phi i64 [ %2513, %2497 ], [ 0, %2522 ], [ %2517, %2516 ]
  %2527 = icmp slt i64 %2526, %2503
  br i1 %2527, label %2528, label %2537

2528:                                             ; preds = %2525, %2534
  %2529 = phi i64 [ %2535, %2534 ], [ %2526, %2525 ]
  %2530 = shl nsw i64 %2529, 4
  %2531 = getelementptr inbounds i8, ptr %2510, i64 %2530
  %2532 = load double, ptr %2531, align 8, !tbaa !44
  %2533 = fcmp ule double %2512, %2532
  br i1 %2533, label %2542, label %2534

2534:                                             ; preds = %2528
  %2535 = add i64 %2529, 1
  store i64 %2535, ptr %2506, align 8, !tbaa !30
  %2536 = icmp eq i64 %2535, %2503
  br i1 %2536, label %2537, label %2528, !llvm.loop !80

2537:                                             ; preds = %2534, %2525
  %2538 = shl i64 %2503, 4
  %2539 = getelementptr i8, ptr %2510, i64 %2538
  %2540 = getelementptr i8, ptr %2539, i64 -8
  %2541 = load double, ptr %2540, align 8, !tbaa !44
  br label %2559

2542:                                             ; preds = %2528
  %2543 = shl nsw i64 %2529, 1
  %2544 = or disjoint i64 %2543, 1
  %2545 = getelementptr inbounds double, ptr %2510, i64 %2544
  %2546 = load double, ptr %2545, align 8, !tbaa !44
  %2547 = icmp sgt i64 %2529, 0
  br i1 %2547, label %2548, label %2559

2548:                                             ; preds = %2542
  %2549 = getelementptr inbounds nuw i8, ptr %2510, i64 %2530
  %2550 = getelementptr i8, ptr %2549, i64 -8
  %2551 = load double, ptr %2550, align 8, !tbaa !44
  %2552 = getelementptr i8, ptr %2549, i64 -16
  %2553 = load double, ptr %2552, align 8, !tbaa !44
  %2554 = fsub double %2512, %2553
  %2555 = fsub double %2532, %2553
  %2556 = fdiv double %2554, %2555
  %2557 = fsub double %2546, %2551
  %2558 = tail call double @llvm.fmuladd.f64(double %2556, double %2557, double %2551)
  br label %2559

2559:                                             ; preds = %2548, %2542, %2537
  %2560 = phi double [ %2558, %2548 ], [ %2546, %2542 ], [ %2541, %2537 ]
  %2561 = getelementptr inbounds nuw double, ptr %5, i64 %2493
  store double %2560, ptr %2561, align 8, !tbaa !44
  br label %2562

2562:                                             ; preds = %2559, %2492
  %2563 = add nuw nsw i64 %2493, 1
  %2564 = icmp eq i64 %2563, 8
  br i1 %2564, label %2565, label %2492, !llvm.loop !81

2565:                                             ; preds = %2562
  %2566 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2567

2567:                                             ; preds = %2379, %2565
  %2568 = phi <8 x double> [ %2566, %2565 ], [ zeroinitializer, %2379 ]
  %2569 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2570 = fcmp ogt <8 x double> %2569, zeroinitializer
  %2571 = sext <8 x i1> %2570 to <8 x i64>
  %2572 = xor <8 x i64> %2571, splat (i64 -1)
  %2573 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2574 = fcmp oeq <8 x double> %2573, splat (double 1.000000e+00)
  %2575 = fcmp oeq <8 x double> %2573, splat (double 2.000000e+00)
  %2576 = or <8 x i1> %2574, %2575
  %2577 = select <8 x i1> %2576, <8 x i64> %2572, <8 x i64> zeroinitializer
  %2578 = xor <8 x i64> %2577, %2571
  %2579 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2580 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2581 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2582 = icmp eq <8 x i64> %2578, splat (i64 -1)
  %2583 = select <8 x i1> %2582, <8 x double> %2581, <8 x double> %2580
  %2584 = bitcast <8 x i1> %2570 to i8
  %2585 = icmp eq i8 %2584, 0
  br i1 %2585, label %2617, label %2586

2586:                                             ; preds = %2567
  %2587 = select <8 x i1> %2570, <8 x double> %2568, <8 x double> %2583
  %2588 = fmul <8 x double> %2587, splat (double 0x3EB0C6F7A0B5ED8D)
  %2589 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2588)
  %2590 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2589)
  %2591 = fmul <8 x double> %2590, %2590
  %2592 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2590, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2591)
  %2593 = fadd <8 x double> %2592, splat (double 0x402DD4891DBECC6B)
  %2594 = fmul <8 x double> %2590, splat (double 0x40C77A698FD9BCCA)
  %2595 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2591, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2594)
  %2596 = fadd <8 x double> %2595, splat (double 0xC0B2D7440748F0B3)
  %2597 = fmul <8 x double> %2590, splat (double 0xC148A99584203885)
  %2598 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2591, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2597)
  %2599 = fadd <8 x double> %2598, splat (double 0x4118B9E59F2691E5)
  %2600 = fmul <8 x double> %2599, splat (double 2.000000e+00)
  %2601 = fneg <8 x double> %2596
  %2602 = fmul <8 x double> %2593, splat (double 4.000000e+00)
  %2603 = fneg <8 x double> %2599
  %2604 = fmul <8 x double> %2602, %2603
  %2605 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2596, <8 x double> %2596, <8 x double> %2604)
  %2606 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2605)
  %2607 = fsub <8 x double> %2601, %2606
  %2608 = fdiv <8 x double> %2600, %2607
  %2609 = fadd <8 x double> %2608, splat (double 0x408451671D164BD4)
  %2610 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2608, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2611 = fmul <8 x double> %2610, splat (double -4.000000e+00)
  %2612 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2609, <8 x double> %2609, <8 x double> %2611)
  %2613 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2612)
  %2614 = fsub <8 x double> %2609, %2613
  %2615 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2614, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2616 = select <8 x i1> %2570, <8 x double> %2615, <8 x double> %2579
  br label %2617

2617:                                             ; preds = %2586, %2567
  %2618 = phi <8 x double> [ %2587, %2586 ], [ %2583, %2567 ]
  %2619 = phi <8 x double> [ %2616, %2586 ], [ %2579, %2567 ]
  %2620 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2621 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2622 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2623 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %2624 = fmul <8 x double> %2622, %2623
  %2625 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2620, <8 x double> %2621, <8 x double> %2624)
  %2626 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %2627 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2628 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2629 = fneg <8 x double> %2625
  %2630 = fmul <8 x double> %2628, %2629
  %2631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2626, <8 x double> %2627, <8 x double> %2630)
  %2632 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2633 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2628, <8 x double> %2632, <8 x double> %2626)
  %2634 = fdiv <8 x double> %2631, %2633
  %2635 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2636 = select <8 x i1> %2582, <8 x double> %2635, <8 x double> %2580
  store <8 x double> %2636, ptr %207, align 64, !tbaa !26
  %2637 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %2638 = select <8 x i1> %2582, <8 x double> %2637, <8 x double> %2634
  store <8 x double> %2638, ptr %208, align 64, !tbaa !26
  store <8 x double> %2618, ptr %201, align 64, !tbaa !26
  %2639 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %2640 = and <8 x i64> %2639, %2577
  %2641 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2640)
  %2642 = icmp eq i64 %2641, 0
  br i1 %2642, label %3190, label %2643

2643:                                             ; preds = %2617
  %2644 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %2645 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %2646 = fmul <8 x double> %2622, %2645
  %2647 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2620, <8 x double> %2644, <8 x double> %2646)
  %2648 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %2649 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2650 = fdiv <8 x double> %2648, %2649
  %2651 = fmul <8 x double> %2580, splat (double 3.000000e-01)
  %2652 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %2653 = fadd <8 x double> %2580, %2652
  %2654 = fadd <8 x double> %2653, splat (double 2.000000e+05)
  %2655 = fmul <8 x double> %2649, splat (double 2.870530e+02)
  %2656 = fdiv <8 x double> %2580, %2655
  %2657 = fcmp ogt <8 x double> %2618, %2651
  %2658 = select <8 x i1> %2657, <8 x double> %2618, <8 x double> %2651
  %2659 = fcmp olt <8 x double> %2658, %2654
  %2660 = select <8 x i1> %2659, <8 x double> %2658, <8 x double> %2654
  %2661 = icmp eq <8 x i64> %2577, zeroinitializer
  %2662 = select <8 x i1> %2661, <8 x double> %2618, <8 x double> %2660
  %2663 = fdiv <8 x double> %2636, splat (double 2.870530e+02)
  %2664 = fmul <8 x double> %2656, splat (double 2.000000e+00)
  %2665 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2664)
  br label %2666

2666:                                             ; preds = %2972, %2643
  %2667 = phi <8 x double> [ %2619, %2643 ], [ %2701, %2972 ]
  %2668 = phi <8 x double> [ %2651, %2643 ], [ %3129, %2972 ]
  %2669 = phi <8 x double> [ %2654, %2643 ], [ %3126, %2972 ]
  %2670 = phi <8 x i64> [ %2640, %2643 ], [ %3145, %2972 ]
  %2671 = phi i32 [ 0, %2643 ], [ %3150, %2972 ]
  %2672 = phi <8 x double> [ %2662, %2643 ], [ %3147, %2972 ]
  %2673 = fmul <8 x double> %2672, splat (double 0x3EB0C6F7A0B5ED8D)
  %2674 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2673)
  %2675 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2674)
  %2676 = fmul <8 x double> %2675, %2675
  %2677 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2675, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2676)
  %2678 = fadd <8 x double> %2677, splat (double 0x402DD4891DBECC6B)
  %2679 = fmul <8 x double> %2675, splat (double 0x40C77A698FD9BCCA)
  %2680 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2676, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2679)
  %2681 = fadd <8 x double> %2680, splat (double 0xC0B2D7440748F0B3)
  %2682 = fmul <8 x double> %2675, splat (double 0xC148A99584203885)
  %2683 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2676, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2682)
  %2684 = fadd <8 x double> %2683, splat (double 0x4118B9E59F2691E5)
  %2685 = fmul <8 x double> %2684, splat (double 2.000000e+00)
  %2686 = fneg <8 x double> %2681
  %2687 = fmul <8 x double> %2678, splat (double 4.000000e+00)
  %2688 = fneg <8 x double> %2684
  %2689 = fmul <8 x double> %2687, %2688
  %2690 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2681, <8 x double> %2681, <8 x double> %2689)
  %2691 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2690)
  %2692 = fsub <8 x double> %2686, %2691
  %2693 = fdiv <8 x double> %2685, %2692
  %2694 = fadd <8 x double> %2693, splat (double 0x408451671D164BD4)
  %2695 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2693, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2696 = fmul <8 x double> %2695, splat (double -4.000000e+00)
  %2697 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2694, <8 x double> %2694, <8 x double> %2696)
  %2698 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2697)
  %2699 = fsub <8 x double> %2694, %2698
  %2700 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2699, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2701 = select <8 x i1> %2661, <8 x double> %2667, <8 x double> %2700
  %2702 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2701, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2703 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2701, <8 x double> %2702, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2704 = load i64, ptr %178, align 8, !tbaa !20, !noalias !100
  %2705 = icmp sgt i64 %2704, 0
  br i1 %2705, label %2706, label %2972

2706:                                             ; preds = %2666
  %2707 = fdiv <8 x double> splat (double 1.000000e+00), %2703
  br label %2708

2708:                                             ; preds = %2706, %2889
  %2709 = phi <8 x double> [ zeroinitializer, %2706 ], [ %2968, %2889 ]
  %2710 = phi <8 x double> [ zeroinitializer, %2706 ], [ %2967, %2889 ]
  %2711 = phi i64 [ 0, %2706 ], [ %2969, %2889 ]
  %2712 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !100
  %2713 = getelementptr inbounds nuw %struct.Piece, ptr %2712, i64 %2711
  %2714 = getelementptr inbounds nuw i8, ptr %2713, i64 6208
  %2715 = load <8 x double>, ptr %2714, align 64, !tbaa !26, !noalias !100
  %2716 = getelementptr inbounds nuw i8, ptr %2713, i64 6272
  %2717 = load <8 x double>, ptr %2716, align 64, !tbaa !26, !noalias !100
  %2718 = getelementptr inbounds nuw i8, ptr %2713, i64 7680
  %2719 = load <8 x double>, ptr %2718, align 64, !tbaa !26, !noalias !100
  %2720 = fcmp ule <8 x double> %2719, splat (double 1.000000e+00)
  %2721 = fmul <8 x double> %2701, %2717
  %2722 = fcmp ogt <8 x double> %2715, %2721
  %2723 = and <8 x i1> %2720, %2722
  %2724 = fneg <8 x double> %2717
  %2725 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2724, <8 x double> %2701, <8 x double> %2715)
  %2726 = fmul <8 x double> %2707, %2725
  %2727 = select <8 x i1> %2723, <8 x double> %2726, <8 x double> zeroinitializer
  %2728 = fmul <8 x double> %2707, %2724
  %2729 = fdiv <8 x double> %2715, %2717
  %2730 = select <8 x i1> %2723, <8 x double> %2701, <8 x double> %2729
  %2731 = getelementptr inbounds nuw i8, ptr %2713, i64 8448
  %2732 = load <8 x i64>, ptr %2731, align 64, !tbaa !26, !noalias !100
  %2733 = getelementptr inbounds nuw i8, ptr %2713, i64 2240
  %2734 = load <8 x double>, ptr %2733, align 64, !tbaa !26, !noalias !100
  %2735 = fcmp ule <8 x double> %2734, zeroinitializer
  %2736 = xor <8 x i1> %2720, splat (i1 true)
  %2737 = select <8 x i1> %2736, <8 x i1> splat (i1 true), <8 x i1> %2735
  %2738 = getelementptr inbounds nuw i8, ptr %2713, i64 6336
  %2739 = load <8 x double>, ptr %2738, align 64, !tbaa !26, !noalias !100
  %2740 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2724, <8 x double> %2739, <8 x double> %2715)
  %2741 = fcmp ogt <8 x double> %2740, zeroinitializer
  %2742 = select <8 x i1> %2741, <8 x double> %2740, <8 x double> zeroinitializer
  %2743 = fmul <8 x double> %2707, %2742
  %2744 = icmp eq <8 x i64> %2732, zeroinitializer
  %2745 = select <8 x i1> %2737, <8 x i1> splat (i1 true), <8 x i1> %2744
  %2746 = select <8 x i1> %2745, <8 x double> %2727, <8 x double> %2743
  %2747 = select <8 x i1> %2745, <8 x double> %2730, <8 x double> %2739
  %2748 = select <8 x i1> %2745, <8 x i1> %2723, <8 x i1> zeroinitializer
  %2749 = select <8 x i1> %2748, <8 x double> %2728, <8 x double> zeroinitializer
  %2750 = getelementptr inbounds nuw i8, ptr %2713, i64 7872
  %2751 = getelementptr inbounds nuw i8, ptr %2713, i64 8128
  %2752 = load <8 x double>, ptr %2751, align 64, !tbaa !26, !noalias !103
  %2753 = fcmp ole <8 x double> %2701, %2752
  %2754 = getelementptr inbounds nuw i8, ptr %2713, i64 8192
  %2755 = load <8 x double>, ptr %2754, align 64, !tbaa !26, !noalias !103
  %2756 = fcmp oge <8 x double> %2701, %2755
  %2757 = or <8 x i1> %2753, %2756
  %2758 = bitcast <8 x i1> %2757 to i8
  %2759 = icmp eq i8 %2758, 0
  br i1 %2759, label %2760, label %2768

2760:                                             ; preds = %2708
  %2761 = load <8 x double>, ptr %2750, align 64, !tbaa !26, !noalias !103
  %2762 = getelementptr inbounds nuw i8, ptr %2713, i64 7936
  %2763 = load <8 x double>, ptr %2762, align 64, !tbaa !26, !noalias !103
  %2764 = getelementptr inbounds nuw i8, ptr %2713, i64 8064
  %2765 = load <8 x double>, ptr %2764, align 64, !tbaa !26, !noalias !103
  %2766 = getelementptr inbounds nuw i8, ptr %2713, i64 8000
  %2767 = load <8 x double>, ptr %2766, align 64, !tbaa !26, !noalias !103
  br label %2889

2768:                                             ; preds = %2708
  %2769 = load i64, ptr %141, align 16, !tbaa !21, !noalias !106
  %2770 = sitofp i64 %2769 to double
  %2771 = insertelement <8 x double> poison, double %2770, i64 0
  %2772 = shufflevector <8 x double> %2771, <8 x double> poison, <8 x i32> zeroinitializer
  %2773 = icmp sgt i64 %2769, 0
  br i1 %2773, label %2774, label %2864

2774:                                             ; preds = %2768
  %2775 = getelementptr inbounds nuw i8, ptr %2713, i64 8568
  %2776 = load ptr, ptr %2775, align 8, !tbaa !88, !noalias !106
  %2777 = getelementptr inbounds nuw i8, ptr %2713, i64 8576
  %2778 = load ptr, ptr %2777, align 64, !tbaa !89, !noalias !106
  %2779 = getelementptr inbounds nuw i8, ptr %2713, i64 8512
  %2780 = load i64, ptr %2779, align 64, !tbaa !31, !noalias !106
  %2781 = getelementptr inbounds nuw i8, ptr %2713, i64 8592
  %2782 = getelementptr inbounds nuw i8, ptr %2713, i64 8584
  %2783 = getelementptr inbounds nuw i8, ptr %2713, i64 8600
  br label %2784

2784:                                             ; preds = %2774, %2832
  %2785 = phi <8 x i64> [ splat (i64 -1), %2774 ], [ %2804, %2832 ]
  %2786 = phi i64 [ %2769, %2774 ], [ %2794, %2832 ]
  %2787 = phi <8 x double> [ splat (double 1.000000e+09), %2774 ], [ %2847, %2832 ]
  %2788 = phi <8 x double> [ zeroinitializer, %2774 ], [ %2851, %2832 ]
  %2789 = phi <8 x double> [ splat (double 1.000000e+09), %2774 ], [ %2829, %2832 ]
  %2790 = phi <8 x double> [ splat (double 1.000000e+00), %2774 ], [ %2828, %2832 ]
  %2791 = phi <8 x double> [ %2772, %2774 ], [ %2855, %2832 ]
  %2792 = phi <8 x double> [ zeroinitializer, %2774 ], [ %2844, %2832 ]
  %2793 = phi <8 x double> [ zeroinitializer, %2774 ], [ %2842, %2832 ]
  %2794 = add nsw i64 %2786, -1
  %2795 = getelementptr inbounds nuw <8 x double>, ptr %2776, i64 %2794
  %2796 = load <8 x double>, ptr %2795, align 64, !tbaa !26, !noalias !106
  %2797 = getelementptr inbounds nuw <8 x double>, ptr %2778, i64 %2794
  %2798 = load <8 x double>, ptr %2797, align 64, !tbaa !26, !noalias !106
  %2799 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2798, <8 x double> %2701, <8 x double> %2796)
  %2800 = fsub <8 x double> %2799, %2701
  %2801 = fcmp ogt <8 x double> %2800, splat (double 1.000000e-09)
  %2802 = select <8 x i1> %2801, <8 x i64> %2785, <8 x i64> zeroinitializer
  %2803 = icmp sgt i64 %2786, %2780
  %2804 = select i1 %2803, <8 x i64> %2802, <8 x i64> zeroinitializer
  %2805 = icmp slt i64 %2786, %2769
  br i1 %2805, label %2806, label %2818

2806:                                             ; preds = %2784
  %2807 = load ptr, ptr %2781, align 16, !tbaa !86, !noalias !106
  %2808 = getelementptr inbounds nuw <8 x double>, ptr %2807, i64 %2786
  %2809 = load <8 x double>, ptr %2808, align 64, !tbaa !26, !noalias !106
  %2810 = fmul <8 x double> %2800, %2809
  %2811 = icmp eq <8 x i64> %2804, %2785
  %2812 = select <8 x i1> %2811, <8 x double> zeroinitializer, <8 x double> %2810
  %2813 = fadd <8 x double> %2793, %2812
  %2814 = fadd <8 x double> %2798, splat (double -1.000000e+00)
  %2815 = fmul <8 x double> %2814, %2809
  %2816 = select <8 x i1> %2811, <8 x double> zeroinitializer, <8 x double> %2815
  %2817 = fadd <8 x double> %2792, %2816
  br label %2818

2818:                                             ; preds = %2806, %2784
  %2819 = phi <8 x double> [ %2813, %2806 ], [ %2793, %2784 ]
  %2820 = phi <8 x double> [ %2817, %2806 ], [ %2792, %2784 ]
  br i1 %2803, label %2821, label %2827

2821:                                             ; preds = %2818
  %2822 = fneg <8 x double> %2800
  %2823 = icmp eq <8 x i64> %2804, %2785
  %2824 = select <8 x i1> %2823, <8 x double> %2789, <8 x double> %2822
  %2825 = fsub <8 x double> splat (double 1.000000e+00), %2798
  %2826 = select <8 x i1> %2823, <8 x double> %2790, <8 x double> %2825
  br label %2827

2827:                                             ; preds = %2821, %2818
  %2828 = phi <8 x double> [ %2826, %2821 ], [ %2790, %2818 ]
  %2829 = phi <8 x double> [ %2824, %2821 ], [ %2789, %2818 ]
  %2830 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2804)
  %2831 = icmp eq i64 %2830, 0
  br i1 %2831, label %2857, label %2832

2832:                                             ; preds = %2827
  %2833 = load ptr, ptr %2782, align 8, !tbaa !85, !noalias !106
  %2834 = getelementptr inbounds nuw <8 x double>, ptr %2833, i64 %2794
  %2835 = load <8 x double>, ptr %2834, align 64, !tbaa !26, !noalias !106
  %2836 = load ptr, ptr %2783, align 8, !tbaa !87, !noalias !106
  %2837 = getelementptr inbounds nuw <8 x double>, ptr %2836, i64 %2794
  %2838 = load <8 x double>, ptr %2837, align 64, !tbaa !26, !noalias !106
  %2839 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2838, <8 x double> %2701, <8 x double> %2835)
  %2840 = icmp eq <8 x i64> %2804, zeroinitializer
  %2841 = select <8 x i1> %2840, <8 x double> zeroinitializer, <8 x double> %2839
  %2842 = fadd <8 x double> %2819, %2841
  %2843 = select <8 x i1> %2840, <8 x double> zeroinitializer, <8 x double> %2838
  %2844 = fadd <8 x double> %2820, %2843
  %2845 = fcmp olt <8 x double> %2787, %2800
  %2846 = select <8 x i1> %2840, <8 x i1> splat (i1 true), <8 x i1> %2845
  %2847 = select <8 x i1> %2846, <8 x double> %2787, <8 x double> %2800
  %2848 = fsub <8 x double> splat (double 1.000000e+00), %2798
  %2849 = fcmp ogt <8 x double> %2788, %2848
  %2850 = select <8 x i1> %2840, <8 x i1> splat (i1 true), <8 x i1> %2849
  %2851 = select <8 x i1> %2850, <8 x double> %2788, <8 x double> %2848
  %2852 = uitofp nneg i64 %2794 to double
  %2853 = insertelement <8 x double> poison, double %2852, i64 0
  %2854 = shufflevector <8 x double> %2853, <8 x double> poison, <8 x i32> zeroinitializer
  %2855 = select <8 x i1> %2840, <8 x double> %2791, <8 x double> %2854
  %2856 = icmp samesign ugt i64 %2786, 1
  br i1 %2856, label %2784, label %2857, !llvm.loop !109

2857:                                             ; preds = %2827, %2832
  %2858 = phi <8 x double> [ %2855, %2832 ], [ %2791, %2827 ]
  %2859 = phi <8 x double> [ %2851, %2832 ], [ %2788, %2827 ]
  %2860 = phi <8 x double> [ %2847, %2832 ], [ %2787, %2827 ]
  %2861 = phi <8 x double> [ %2842, %2832 ], [ %2819, %2827 ]
  %2862 = phi <8 x double> [ %2844, %2832 ], [ %2820, %2827 ]
  %2863 = fdiv <8 x double> %2829, %2828
  br label %2864

2864:                                             ; preds = %2857, %2768
  %2865 = phi <8 x double> [ %2772, %2768 ], [ %2858, %2857 ]
  %2866 = phi <8 x double> [ zeroinitializer, %2768 ], [ %2859, %2857 ]
  %2867 = phi <8 x double> [ splat (double 1.000000e+09), %2768 ], [ %2860, %2857 ]
  %2868 = phi <8 x double> [ zeroinitializer, %2768 ], [ %2861, %2857 ]
  %2869 = phi <8 x double> [ zeroinitializer, %2768 ], [ %2862, %2857 ]
  %2870 = phi <8 x double> [ splat (double 1.000000e+09), %2768 ], [ %2863, %2857 ]
  %2871 = fsub <8 x double> %2701, %2870
  %2872 = fcmp ogt <8 x double> %2866, splat (double 1.000000e-09)
  %2873 = select <8 x i1> %2872, <8 x double> %2866, <8 x double> splat (double 1.000000e-09)
  %2874 = fdiv <8 x double> %2867, %2873
  %2875 = fadd <8 x double> %2701, %2874
  %2876 = load <8 x double>, ptr %2750, align 64, !tbaa !26, !noalias !103
  %2877 = select <8 x i1> %2757, <8 x double> %2868, <8 x double> %2876
  store <8 x double> %2877, ptr %2750, align 64, !tbaa !26, !noalias !103
  %2878 = getelementptr inbounds nuw i8, ptr %2713, i64 7936
  %2879 = load <8 x double>, ptr %2878, align 64, !tbaa !26, !noalias !103
  %2880 = select <8 x i1> %2757, <8 x double> %2869, <8 x double> %2879
  store <8 x double> %2880, ptr %2878, align 64, !tbaa !26, !noalias !103
  %2881 = getelementptr inbounds nuw i8, ptr %2713, i64 8000
  %2882 = load <8 x double>, ptr %2881, align 64, !tbaa !26, !noalias !103
  %2883 = select <8 x i1> %2757, <8 x double> %2865, <8 x double> %2882
  store <8 x double> %2883, ptr %2881, align 64, !tbaa !26, !noalias !103
  %2884 = getelementptr inbounds nuw i8, ptr %2713, i64 8064
  %2885 = load <8 x double>, ptr %2884, align 64, !tbaa !26, !noalias !103
  %2886 = select <8 x i1> %2757, <8 x double> %2701, <8 x double> %2885
  store <8 x double> %2886, ptr %2884, align 64, !tbaa !26, !noalias !103
  %2887 = select <8 x i1> %2757, <8 x double> %2871, <8 x double> %2752
  store <8 x double> %2887, ptr %2751, align 64, !tbaa !26, !noalias !103
  %2888 = select <8 x i1> %2757, <8 x double> %2875, <8 x double> %2755
  store <8 x double> %2888, ptr %2754, align 64, !tbaa !26, !noalias !103
  br label %2889

2889:                                             ; preds = %2760, %2864
  %2890 = phi <8 x double> [ %2767, %2760 ], [ %2883, %2864 ]
  %2891 = phi <8 x double> [ %2765, %2760 ], [ %2886, %2864 ]
  %2892 = phi <8 x double> [ %2763, %2760 ], [ %2880, %2864 ]
  %2893 = phi <8 x double> [ %2761, %2760 ], [ %2877, %2864 ]
  %2894 = fsub <8 x double> %2701, %2891
  %2895 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2892, <8 x double> %2894, <8 x double> %2893)
  %2896 = getelementptr inbounds nuw i8, ptr %2713, i64 6464
  %2897 = load <8 x double>, ptr %2896, align 64, !tbaa !26, !noalias !100
  %2898 = getelementptr inbounds nuw i8, ptr %2713, i64 5888
  %2899 = load <8 x double>, ptr %2898, align 64, !tbaa !26, !noalias !100
  %2900 = getelementptr inbounds nuw i8, ptr %2713, i64 7424
  %2901 = load <8 x double>, ptr %2900, align 64, !tbaa !26, !noalias !100
  %2902 = fneg <8 x double> %2901
  %2903 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2897, <8 x double> %2899, <8 x double> %2902)
  %2904 = getelementptr inbounds nuw i8, ptr %2713, i64 7360
  %2905 = load <8 x double>, ptr %2904, align 64, !tbaa !26, !noalias !100
  %2906 = fadd <8 x double> %2897, %2905
  %2907 = getelementptr inbounds nuw i8, ptr %2713, i64 8320
  %2908 = load <8 x i64>, ptr %2907, align 64, !tbaa !26, !noalias !100
  %2909 = getelementptr inbounds nuw i8, ptr %2713, i64 8672
  %2910 = load ptr, ptr %2909, align 32, !tbaa !94, !noalias !100
  %2911 = load <8 x double>, ptr %2910, align 64, !tbaa !26, !noalias !100
  %2912 = fmul <8 x double> %2897, %2911
  %2913 = icmp eq <8 x i64> %2908, zeroinitializer
  %2914 = select <8 x i1> %2913, <8 x double> %2903, <8 x double> %2912
  %2915 = getelementptr inbounds nuw i8, ptr %2713, i64 8680
  %2916 = load ptr, ptr %2915, align 8, !tbaa !95, !noalias !100
  %2917 = load <8 x double>, ptr %2916, align 64, !tbaa !26, !noalias !100
  %2918 = fsub <8 x double> splat (double 1.000000e+00), %2917
  %2919 = fmul <8 x double> %2897, %2918
  %2920 = select <8 x i1> %2913, <8 x double> %2906, <8 x double> %2919
  %2921 = fneg <8 x double> %2920
  %2922 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2921, <8 x double> %2701, <8 x double> %2914)
  %2923 = load i64, ptr %141, align 16, !tbaa !21, !noalias !100
  %2924 = sitofp i64 %2923 to double
  %2925 = insertelement <8 x double> poison, double %2924, i64 0
  %2926 = shufflevector <8 x double> %2925, <8 x double> poison, <8 x i32> zeroinitializer
  %2927 = fcmp olt <8 x double> %2890, %2926
  %2928 = and <8 x i1> %2720, %2927
  %2929 = fcmp ogt <8 x double> %2895, zeroinitializer
  %2930 = fcmp oge <8 x double> %2922, zeroinitializer
  %2931 = and <8 x i1> %2929, %2930
  %2932 = and <8 x i1> %2931, %2928
  %2933 = sext <8 x i1> %2932 to <8 x i64>
  %2934 = xor <8 x i64> %2933, splat (i64 -1)
  %2935 = fadd <8 x double> %2895, %2922
  %2936 = fcmp ogt <8 x double> %2935, zeroinitializer
  %2937 = select <8 x i1> %2936, <8 x i1> %2928, <8 x i1> zeroinitializer
  %2938 = select <8 x i1> %2937, <8 x i64> %2934, <8 x i64> zeroinitializer
  %2939 = or <8 x i64> %2938, %2933
  %2940 = fmul <8 x double> %2707, %2922
  %2941 = select <8 x i1> %2932, <8 x double> %2940, <8 x double> zeroinitializer
  %2942 = icmp eq <8 x i64> %2939, zeroinitializer
  %2943 = select <8 x i1> %2942, <8 x double> %2746, <8 x double> %2941
  %2944 = select <8 x i1> %2942, <8 x double> %2747, <8 x double> %2701
  %2945 = fsub <8 x double> %2892, %2920
  %2946 = fmul <8 x double> %2707, %2945
  %2947 = select <8 x i1> %2942, <8 x double> %2749, <8 x double> %2946
  %2948 = getelementptr inbounds nuw i8, ptr %2713, i64 6016
  store <8 x double> %2943, ptr %2948, align 64, !tbaa !26, !noalias !100
  %2949 = getelementptr inbounds nuw i8, ptr %2713, i64 5952
  store <8 x double> %2944, ptr %2949, align 64, !tbaa !26, !noalias !100
  %2950 = fmul <8 x double> %2707, %2895
  %2951 = fmul <8 x double> %2707, %2935
  %2952 = icmp eq <8 x i64> %2938, zeroinitializer
  %2953 = select <8 x i1> %2952, <8 x double> zeroinitializer, <8 x double> %2951
  %2954 = select <8 x i1> %2932, <8 x double> %2950, <8 x double> %2953
  %2955 = getelementptr inbounds nuw i8, ptr %2713, i64 6080
  store <8 x double> %2954, ptr %2955, align 64, !tbaa !26, !noalias !100
  %2956 = load i64, ptr %141, align 16, !tbaa !21, !noalias !100
  %2957 = sitofp i64 %2956 to double
  %2958 = insertelement <8 x double> poison, double %2957, i64 0
  %2959 = shufflevector <8 x double> %2958, <8 x double> poison, <8 x i32> zeroinitializer
  %2960 = select <8 x i1> %2942, <8 x double> %2959, <8 x double> %2890
  %2961 = getelementptr inbounds nuw i8, ptr %2713, i64 6144
  store <8 x double> %2960, ptr %2961, align 64, !tbaa !26, !noalias !100
  %2962 = getelementptr inbounds nuw i8, ptr %2713, i64 128
  %2963 = load <8 x double>, ptr %2962, align 64, !tbaa !26, !noalias !100
  %2964 = fadd <8 x double> %2943, %2954
  %2965 = fmul <8 x double> %2963, %2964
  %2966 = fmul <8 x double> %2963, %2947
  %2967 = fadd <8 x double> %2710, %2965
  %2968 = fadd <8 x double> %2709, %2966
  %2969 = add nuw nsw i64 %2711, 1
  %2970 = load i64, ptr %178, align 8, !tbaa !20, !noalias !100
  %2971 = icmp slt i64 %2969, %2970
  br i1 %2971, label %2708, label %2972, !llvm.loop !110

2972:                                             ; preds = %2889, %2666
  %2973 = phi <8 x double> [ zeroinitializer, %2666 ], [ %2967, %2889 ]
  %2974 = phi <8 x double> [ zeroinitializer, %2666 ], [ %2968, %2889 ]
  %2975 = fsub <8 x double> %2672, %2636
  %2976 = fcmp ogt <8 x double> %2975, zeroinitializer
  %2977 = select <8 x i1> %2976, <8 x double> %2975, <8 x double> zeroinitializer
  %2978 = fadd <8 x double> %2701, splat (double 2.731500e+02)
  %2979 = fdiv <8 x double> %2977, splat (double 4.615260e+02)
  %2980 = fadd <8 x double> %2663, %2979
  %2981 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2982 = fdiv <8 x double> %2980, %2981
  %2983 = fmul <8 x double> %2981, %2982
  %2984 = fdiv <8 x double> %2672, %2983
  %2985 = load <8 x double>, ptr %200, align 64, !tbaa !26, !noalias !111
  %2986 = fsub <8 x double> %2672, %2985
  %2987 = load <8 x double>, ptr %213, align 64, !tbaa !26, !noalias !111
  %2988 = fsub <8 x double> %2986, %2987
  %2989 = load <8 x double>, ptr %214, align 64, !tbaa !26, !noalias !111
  %2990 = load <8 x double>, ptr %160, align 64, !tbaa !26, !noalias !111
  %2991 = fcmp une <8 x double> %2990, splat (double 2.000000e+00)
  %2992 = load <8 x double>, ptr %215, align 64, !tbaa !26, !noalias !111
  %2993 = select <8 x i1> %2991, <8 x double> zeroinitializer, <8 x double> %2992
  %2994 = fadd <8 x double> %2989, %2993
  %2995 = fcmp ule <8 x double> %2986, zeroinitializer
  %2996 = fcmp ule <8 x double> %2994, zeroinitializer
  %2997 = or <8 x i1> %2995, %2996
  %2998 = fmul <8 x double> %2982, splat (double 2.000000e+00)
  %2999 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2998)
  %3000 = fmul <8 x double> %2999, %2994
  %3001 = fadd <8 x double> %2986, splat (double 2.000000e+02)
  %3002 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3001)
  %3003 = select <8 x i1> %2995, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3002
  %3004 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2986, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3005 = fmul <8 x double> %3004, %3000
  %3006 = fmul <8 x double> %3003, %3003
  %3007 = fmul <8 x double> %3003, %3006
  %3008 = fdiv <8 x double> %3005, %3007
  %3009 = fmul <8 x double> %2986, %3000
  %3010 = fdiv <8 x double> %3009, %3003
  %3011 = select <8 x i1> %2997, <8 x double> zeroinitializer, <8 x double> %3010
  %3012 = select <8 x i1> %2997, <8 x double> zeroinitializer, <8 x double> %3008
  %3013 = fcmp ule <8 x double> %2988, zeroinitializer
  %3014 = load <8 x double>, ptr %216, align 64, !tbaa !26, !noalias !111
  %3015 = fmul <8 x double> %2988, %3014
  %3016 = select <8 x i1> %3013, <8 x double> zeroinitializer, <8 x double> %3015
  %3017 = fadd <8 x double> %3016, %3011
  %3018 = select <8 x i1> %3013, <8 x double> zeroinitializer, <8 x double> %3014
  %3019 = fadd <8 x double> %3018, %3012
  %3020 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %3021 = fsub <8 x double> %2985, %2672
  %3022 = fcmp ule <8 x double> %3021, zeroinitializer
  %3023 = fcmp ule <8 x double> %3020, zeroinitializer
  %3024 = or <8 x i1> %3022, %3023
  %3025 = fmul <8 x double> %2665, %3020
  %3026 = fadd <8 x double> %3021, splat (double 2.000000e+02)
  %3027 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3026)
  %3028 = select <8 x i1> %3022, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3027
  %3029 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3021, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3030 = fmul <8 x double> %3029, %3025
  %3031 = fmul <8 x double> %3028, %3028
  %3032 = fmul <8 x double> %3028, %3031
  %3033 = fdiv <8 x double> %3030, %3032
  %3034 = fmul <8 x double> %3021, %3025
  %3035 = fdiv <8 x double> %3034, %3028
  %3036 = load <8 x double>, ptr %185, align 64, !tbaa !26, !noalias !114
  %3037 = load <8 x double>, ptr %202, align 64, !tbaa !26, !noalias !114
  %3038 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !114
  %3039 = load <8 x double>, ptr %203, align 64, !tbaa !26, !noalias !114
  %3040 = fmul <8 x double> %3038, %3039
  %3041 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3036, <8 x double> %3037, <8 x double> %3040)
  %3042 = load <8 x double>, ptr %206, align 64, !tbaa !26, !noalias !114
  %3043 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !114
  %3044 = load <8 x double>, ptr %204, align 64, !tbaa !26, !noalias !114
  %3045 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3042, <8 x double> %3043, <8 x double> %3044)
  %3046 = load <8 x double>, ptr %205, align 64, !tbaa !26, !noalias !114
  %3047 = fneg <8 x double> %3041
  %3048 = fmul <8 x double> %3042, %3047
  %3049 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3044, <8 x double> %3046, <8 x double> %3048)
  %3050 = fdiv <8 x double> %3049, %3045
  %3051 = fcmp ogt <8 x double> %2977, splat (double 2.000000e+03)
  %3052 = select <8 x i1> %3051, <8 x double> %2977, <8 x double> splat (double 2.000000e+03)
  %3053 = fmul <8 x double> %3052, splat (double 0x3EB0C6F7A0B5ED8D)
  %3054 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3053)
  %3055 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3054)
  %3056 = fmul <8 x double> %3055, %3055
  %3057 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3055, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3056)
  %3058 = fadd <8 x double> %3057, splat (double 0x402DD4891DBECC6B)
  %3059 = fmul <8 x double> %3055, splat (double 0x40C77A698FD9BCCA)
  %3060 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3056, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3059)
  %3061 = fadd <8 x double> %3060, splat (double 0xC0B2D7440748F0B3)
  %3062 = fmul <8 x double> %3055, splat (double 0xC148A99584203885)
  %3063 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3056, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3062)
  %3064 = fadd <8 x double> %3063, splat (double 0x4118B9E59F2691E5)
  %3065 = fmul <8 x double> %3064, splat (double 2.000000e+00)
  %3066 = fneg <8 x double> %3061
  %3067 = fmul <8 x double> %3058, splat (double 4.000000e+00)
  %3068 = fneg <8 x double> %3064
  %3069 = fmul <8 x double> %3067, %3068
  %3070 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3061, <8 x double> %3061, <8 x double> %3069)
  %3071 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3070)
  %3072 = fsub <8 x double> %3066, %3071
  %3073 = fdiv <8 x double> %3065, %3072
  %3074 = fadd <8 x double> %3073, splat (double 0x408451671D164BD4)
  %3075 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3073, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3076 = fmul <8 x double> %3075, splat (double -4.000000e+00)
  %3077 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3074, <8 x double> %3074, <8 x double> %3076)
  %3078 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3077)
  %3079 = fsub <8 x double> %3074, %3078
  %3080 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3079, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3081 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3080, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3082 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3080, <8 x double> %3081, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3083 = fadd <8 x double> %3080, splat (double 2.731500e+02)
  %3084 = fcmp ule <8 x double> %3080, %3050
  %3085 = load <8 x double>, ptr %218, align 64, !tbaa !26, !noalias !114
  %3086 = fmul <8 x double> %3045, %3085
  %3087 = fadd <8 x double> %3045, %3085
  %3088 = fdiv <8 x double> %3086, %3087
  %3089 = fdiv <8 x double> %3088, %3082
  %3090 = fmul <8 x double> %3083, splat (double 4.615260e+02)
  %3091 = fmul <8 x double> %3052, %3082
  %3092 = fmul <8 x double> %3080, %3085
  %3093 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3050, <8 x double> %3045, <8 x double> %3092)
  %3094 = fdiv <8 x double> %3093, %3087
  %3095 = select <8 x i1> %3084, <8 x double> %3050, <8 x double> %3094
  store <8 x double> %3095, ptr %208, align 64, !tbaa !26, !noalias !114
  %3096 = fsub <8 x double> %3080, %3050
  %3097 = fmul <8 x double> %3096, %3089
  %3098 = select <8 x i1> %3084, <8 x double> zeroinitializer, <8 x double> %3097
  %3099 = fmul <8 x double> %2978, splat (double 4.615260e+02)
  %3100 = fmul <8 x double> %2978, %3099
  %3101 = fmul <8 x double> %2672, %2703
  %3102 = fdiv <8 x double> %3100, %3101
  %3103 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3043, <8 x double> %2672, <8 x double> %2647)
  %3104 = fsub <8 x double> %2973, %3098
  %3105 = fmul <8 x double> %3104, splat (double -4.615260e+02)
  %3106 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2650, <8 x double> %3103, <8 x double> %3105)
  %3107 = fmul <8 x double> %3035, splat (double -2.870530e+02)
  %3108 = select <8 x i1> %3024, <8 x double> splat (double -0.000000e+00), <8 x double> %3107
  %3109 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2984, <8 x double> %3017, <8 x double> %3108)
  %3110 = fadd <8 x double> %3109, %3106
  %3111 = fneg <8 x double> %3083
  %3112 = fmul <8 x double> %3090, %3111
  %3113 = fdiv <8 x double> %3112, %3091
  %3114 = fmul <8 x double> %3113, %3089
  %3115 = select <8 x i1> %3084, <8 x double> splat (double -0.000000e+00), <8 x double> %3114
  %3116 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2974, <8 x double> %3102, <8 x double> %3115)
  %3117 = fmul <8 x double> %3116, splat (double -4.615260e+02)
  %3118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2650, <8 x double> %3043, <8 x double> %3117)
  %3119 = fmul <8 x double> %3033, splat (double 2.870530e+02)
  %3120 = select <8 x i1> %3024, <8 x double> zeroinitializer, <8 x double> %3119
  %3121 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2984, <8 x double> %3019, <8 x double> %3120)
  %3122 = fadd <8 x double> %3121, %3118
  %3123 = fcmp ule <8 x double> %3110, zeroinitializer
  %3124 = fcmp olt <8 x double> %2669, %2672
  %3125 = select <8 x i1> %3123, <8 x i1> splat (i1 true), <8 x i1> %3124
  %3126 = select <8 x i1> %3125, <8 x double> %2669, <8 x double> %2672
  %3127 = fcmp ogt <8 x double> %2668, %2672
  %3128 = select <8 x i1> %3127, <8 x double> %2668, <8 x double> %2672
  %3129 = select <8 x i1> %3123, <8 x double> %3128, <8 x double> %2668
  %3130 = fdiv <8 x double> %3110, %3122
  %3131 = fsub <8 x double> %2672, %3130
  %3132 = fsub <8 x double> %3131, %2672
  %3133 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3132)
  %3134 = fcmp uge <8 x double> %3133, splat (double 2.000000e-01)
  %3135 = fcmp uge <8 x double> %3129, %3131
  %3136 = fcmp uge <8 x double> %3131, %3126
  %3137 = or <8 x i1> %3135, %3136
  %3138 = and <8 x i1> %3134, %3137
  %3139 = fadd <8 x double> %3129, %3126
  %3140 = fmul <8 x double> %3139, splat (double 5.000000e-01)
  %3141 = select <8 x i1> %3138, <8 x double> %3140, <8 x double> %3131
  %3142 = fsub <8 x double> %3141, %2672
  %3143 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3142)
  %3144 = fcmp oge <8 x double> %3143, splat (double 2.000000e-01)
  %3145 = select <8 x i1> %3144, <8 x i64> %2670, <8 x i64> zeroinitializer
  %3146 = icmp eq <8 x i64> %3145, zeroinitializer
  %3147 = select <8 x i1> %3146, <8 x double> %2672, <8 x double> %3141
  %3148 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3145)
  %3149 = icmp ne i64 %3148, 0
  %3150 = add nuw nsw i32 %2671, 1
  %3151 = icmp samesign ult i32 %2671, 59
  %3152 = select i1 %3149, i1 %3151, i1 false
  br i1 %3152, label %2666, label %3153, !llvm.loop !117

3153:                                             ; preds = %2972
  %3154 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3155 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %3156 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3157 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %3158 = fmul <8 x double> %3156, %3157
  %3159 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3154, <8 x double> %3155, <8 x double> %3158)
  %3160 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %3161 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %3162 = fsub <8 x double> %3161, %3147
  %3163 = fcmp ule <8 x double> %3162, zeroinitializer
  %3164 = fcmp ule <8 x double> %3160, zeroinitializer
  %3165 = or <8 x i1> %3164, %3163
  %3166 = fmul <8 x double> %2665, %3160
  %3167 = fadd <8 x double> %3162, splat (double 2.000000e+02)
  %3168 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3167)
  %3169 = select <8 x i1> %3163, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3168
  %3170 = fmul <8 x double> %3166, %3162
  %3171 = fdiv <8 x double> %3170, %3169
  %3172 = fmul <8 x double> %3171, splat (double 2.870530e+02)
  %3173 = select <8 x i1> %3165, <8 x double> zeroinitializer, <8 x double> %3172
  %3174 = fdiv <8 x double> %3173, %2650
  %3175 = fsub <8 x double> %3174, %3159
  %3176 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3177 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %3178 = fmul <8 x double> %2982, %3177
  %3179 = fdiv <8 x double> %3017, %3178
  %3180 = fadd <8 x double> %3176, %3179
  %3181 = fdiv <8 x double> %3175, %3180
  %3182 = fcmp ogt <8 x double> %3181, zeroinitializer
  %3183 = select <8 x i1> %3182, <8 x double> %3181, <8 x double> zeroinitializer
  %3184 = fcmp olt <8 x double> %3183, %3147
  %3185 = select <8 x i1> %3184, <8 x double> %3183, <8 x double> %3147
  %3186 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3187 = select <8 x i1> %2661, <8 x double> %3186, <8 x double> %3185
  store <8 x double> %3187, ptr %207, align 64, !tbaa !26
  %3188 = select <8 x i1> %2661, <8 x double> %2638, <8 x double> %3095
  store <8 x double> %3188, ptr %208, align 64, !tbaa !26
  store <8 x double> %3147, ptr %201, align 64, !tbaa !26
  store <8 x double> %2701, ptr %221, align 64, !tbaa !26
  %3189 = load i64, ptr %178, align 8, !tbaa !20
  br label %3445

3190:                                             ; preds = %2617
  store <8 x double> %2619, ptr %221, align 64, !tbaa !26
  %3191 = icmp sgt i64 %2381, 0
  br i1 %3191, label %3192, label %3448

3192:                                             ; preds = %3190
  %3193 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2619, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3194 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2619, <8 x double> %3193, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3195 = fdiv <8 x double> splat (double 1.000000e+00), %3194
  br label %3196

3196:                                             ; preds = %3192, %3372
  %3197 = phi i64 [ 0, %3192 ], [ %3442, %3372 ]
  %3198 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !118
  %3199 = getelementptr inbounds nuw %struct.Piece, ptr %3198, i64 %3197
  %3200 = getelementptr inbounds nuw i8, ptr %3199, i64 6208
  %3201 = load <8 x double>, ptr %3200, align 64, !tbaa !26, !noalias !118
  %3202 = getelementptr inbounds nuw i8, ptr %3199, i64 6272
  %3203 = load <8 x double>, ptr %3202, align 64, !tbaa !26, !noalias !118
  %3204 = getelementptr inbounds nuw i8, ptr %3199, i64 7680
  %3205 = load <8 x double>, ptr %3204, align 64, !tbaa !26, !noalias !118
  %3206 = fcmp ule <8 x double> %3205, splat (double 1.000000e+00)
  %3207 = fmul <8 x double> %2619, %3203
  %3208 = fcmp ogt <8 x double> %3201, %3207
  %3209 = and <8 x i1> %3206, %3208
  %3210 = fneg <8 x double> %3203
  %3211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3210, <8 x double> %2619, <8 x double> %3201)
  %3212 = fmul <8 x double> %3195, %3211
  %3213 = select <8 x i1> %3209, <8 x double> %3212, <8 x double> zeroinitializer
  %3214 = fdiv <8 x double> %3201, %3203
  %3215 = select <8 x i1> %3209, <8 x double> %2619, <8 x double> %3214
  %3216 = getelementptr inbounds nuw i8, ptr %3199, i64 8448
  %3217 = load <8 x i64>, ptr %3216, align 64, !tbaa !26, !noalias !118
  %3218 = getelementptr inbounds nuw i8, ptr %3199, i64 2240
  %3219 = load <8 x double>, ptr %3218, align 64, !tbaa !26, !noalias !118
  %3220 = fcmp ule <8 x double> %3219, zeroinitializer
  %3221 = xor <8 x i1> %3206, splat (i1 true)
  %3222 = select <8 x i1> %3221, <8 x i1> splat (i1 true), <8 x i1> %3220
  %3223 = getelementptr inbounds nuw i8, ptr %3199, i64 6336
  %3224 = load <8 x double>, ptr %3223, align 64, !tbaa !26, !noalias !118
  %3225 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3210, <8 x double> %3224, <8 x double> %3201)
  %3226 = fcmp ogt <8 x double> %3225, zeroinitializer
  %3227 = select <8 x i1> %3226, <8 x double> %3225, <8 x double> zeroinitializer
  %3228 = fmul <8 x double> %3195, %3227
  %3229 = icmp eq <8 x i64> %3217, zeroinitializer
  %3230 = select <8 x i1> %3222, <8 x i1> splat (i1 true), <8 x i1> %3229
  %3231 = select <8 x i1> %3230, <8 x double> %3213, <8 x double> %3228
  %3232 = select <8 x i1> %3230, <8 x double> %3215, <8 x double> %3224
  %3233 = getelementptr inbounds nuw i8, ptr %3199, i64 7872
  %3234 = getelementptr inbounds nuw i8, ptr %3199, i64 8128
  %3235 = load <8 x double>, ptr %3234, align 64, !tbaa !26, !noalias !121
  %3236 = fcmp ole <8 x double> %2619, %3235
  %3237 = getelementptr inbounds nuw i8, ptr %3199, i64 8192
  %3238 = load <8 x double>, ptr %3237, align 64, !tbaa !26, !noalias !121
  %3239 = fcmp oge <8 x double> %2619, %3238
  %3240 = or <8 x i1> %3236, %3239
  %3241 = bitcast <8 x i1> %3240 to i8
  %3242 = icmp eq i8 %3241, 0
  br i1 %3242, label %3243, label %3251

3243:                                             ; preds = %3196
  %3244 = load <8 x double>, ptr %3233, align 64, !tbaa !26, !noalias !121
  %3245 = getelementptr inbounds nuw i8, ptr %3199, i64 7936
  %3246 = load <8 x double>, ptr %3245, align 64, !tbaa !26, !noalias !121
  %3247 = getelementptr inbounds nuw i8, ptr %3199, i64 8064
  %3248 = load <8 x double>, ptr %3247, align 64, !tbaa !26, !noalias !121
  %3249 = getelementptr inbounds nuw i8, ptr %3199, i64 8000
  %3250 = load <8 x double>, ptr %3249, align 64, !tbaa !26, !noalias !121
  br label %3372

3251:                                             ; preds = %3196
  %3252 = load i64, ptr %141, align 16, !tbaa !21, !noalias !124
  %3253 = sitofp i64 %3252 to double
  %3254 = insertelement <8 x double> poison, double %3253, i64 0
  %3255 = shufflevector <8 x double> %3254, <8 x double> poison, <8 x i32> zeroinitializer
  %3256 = icmp sgt i64 %3252, 0
  br i1 %3256, label %3257, label %3347

3257:                                             ; preds = %3251
  %3258 = getelementptr inbounds nuw i8, ptr %3199, i64 8568
  %3259 = load ptr, ptr %3258, align 8, !tbaa !88, !noalias !124
  %3260 = getelementptr inbounds nuw i8, ptr %3199, i64 8576
  %3261 = load ptr, ptr %3260, align 64, !tbaa !89, !noalias !124
  %3262 = getelementptr inbounds nuw i8, ptr %3199, i64 8512
  %3263 = load i64, ptr %3262, align 64, !tbaa !31, !noalias !124
  %3264 = getelementptr inbounds nuw i8, ptr %3199, i64 8592
  %3265 = getelementptr inbounds nuw i8, ptr %3199, i64 8584
  %3266 = getelementptr inbounds nuw i8, ptr %3199, i64 8600
  br label %3267

3267:                                             ; preds = %3257, %3315
  %3268 = phi <8 x i64> [ splat (i64 -1), %3257 ], [ %3287, %3315 ]
  %3269 = phi i64 [ %3252, %3257 ], [ %3277, %3315 ]
  %3270 = phi <8 x double> [ splat (double 1.000000e+09), %3257 ], [ %3330, %3315 ]
  %3271 = phi <8 x double> [ zeroinitializer, %3257 ], [ %3334, %3315 ]
  %3272 = phi <8 x double> [ splat (double 1.000000e+09), %3257 ], [ %3312, %3315 ]
  %3273 = phi <8 x double> [ splat (double 1.000000e+00), %3257 ], [ %3311, %3315 ]
  %3274 = phi <8 x double> [ %3255, %3257 ], [ %3338, %3315 ]
  %3275 = phi <8 x double> [ zeroinitializer, %3257 ], [ %3327, %3315 ]
  %3276 = phi <8 x double> [ zeroinitializer, %3257 ], [ %3325, %3315 ]
  %3277 = add nsw i64 %3269, -1
  %3278 = getelementptr inbounds nuw <8 x double>, ptr %3259, i64 %3277
  %3279 = load <8 x double>, ptr %3278, align 64, !tbaa !26, !noalias !124
  %3280 = getelementptr inbounds nuw <8 x double>, ptr %3261, i64 %3277
  %3281 = load <8 x double>, ptr %3280, align 64, !tbaa !26, !noalias !124
  %3282 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3281, <8 x double> %2619, <8 x double> %3279)
  %3283 = fsub <8 x double> %3282, %2619
  %3284 = fcmp ogt <8 x double> %3283, splat (double 1.000000e-09)
  %3285 = select <8 x i1> %3284, <8 x i64> %3268, <8 x i64> zeroinitializer
  %3286 = icmp sgt i64 %3269, %3263
  %3287 = select i1 %3286, <8 x i64> %3285, <8 x i64> zeroinitializer
  %3288 = icmp slt i64 %3269, %3252
  br i1 %3288, label %3289, label %3301

3289:                                             ; preds = %3267
  %3290 = load ptr, ptr %3264, align 16, !tbaa !86, !noalias !124
  %3291 = getelementptr inbounds nuw <8 x double>, ptr %3290, i64 %3269
  %3292 = load <8 x double>, ptr %3291, align 64, !tbaa !26, !noalias !124
  %3293 = fmul <8 x double> %3283, %3292
  %3294 = icmp eq <8 x i64> %3287, %3268
  %3295 = select <8 x i1> %3294, <8 x double> zeroinitializer, <8 x double> %3293
  %3296 = fadd <8 x double> %3276, %3295
  %3297 = fadd <8 x double> %3281, splat (double -1.000000e+00)
  %3298 = fmul <8 x double> %3297, %3292
  %3299 = select <8 x i1> %3294, <8 x double> zeroinitializer, <8 x double> %3298
  %3300 = fadd <8 x double> %3275, %3299
  br label %3301

3301:                                             ; preds = %3289, %3267
  %3302 = phi <8 x double> [ %3296, %3289 ], [ %3276, %3267 ]
  %3303 = phi <8 x double> [ %3300, %3289 ], [ %3275, %3267 ]
  br i1 %3286, label %3304, label %3310

3304:                                             ; preds = %3301
  %3305 = fneg <8 x double> %3283
  %3306 = icmp eq <8 x i64> %3287, %3268
  %3307 = select <8 x i1> %3306, <8 x double> %3272, <8 x double> %3305
  %3308 = fsub <8 x double> splat (double 1.000000e+00), %3281
  %3309 = select <8 x i1> %3306, <8 x double> %3273, <8 x double> %3308
  br label %3310

3310:                                             ; preds = %3304, %3301
  %3311 = phi <8 x double> [ %3309, %3304 ], [ %3273, %3301 ]
  %3312 = phi <8 x double> [ %3307, %3304 ], [ %3272, %3301 ]
  %3313 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3287)
  %3314 = icmp eq i64 %3313, 0
  br i1 %3314, label %3340, label %3315

3315:                                             ; preds = %3310
  %3316 = load ptr, ptr %3265, align 8, !tbaa !85, !noalias !124
  %3317 = getelementptr inbounds nuw <8 x double>, ptr %3316, i64 %3277
  %3318 = load <8 x double>, ptr %3317, align 64, !tbaa !26, !noalias !124
  %3319 = load ptr, ptr %3266, align 8, !tbaa !87, !noalias !124
  %3320 = getelementptr inbounds nuw <8 x double>, ptr %3319, i64 %3277
  %3321 = load <8 x double>, ptr %3320, align 64, !tbaa !26, !noalias !124
  %3322 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3321, <8 x double> %2619, <8 x double> %3318)
  %3323 = icmp eq <8 x i64> %3287, zeroinitializer
  %3324 = select <8 x i1> %3323, <8 x double> zeroinitializer, <8 x double> %3322
  %3325 = fadd <8 x double> %3302, %3324
  %3326 = select <8 x i1> %3323, <8 x double> zeroinitializer, <8 x double> %3321
  %3327 = fadd <8 x double> %3303, %3326
  %3328 = fcmp olt <8 x double> %3270, %3283
  %3329 = select <8 x i1> %3323, <8 x i1> splat (i1 true), <8 x i1> %3328
  %3330 = select <8 x i1> %3329, <8 x double> %3270, <8 x double> %3283
  %3331 = fsub <8 x double> splat (double 1.000000e+00), %3281
  %3332 = fcmp ogt <8 x double> %3271, %3331
  %3333 = select <8 x i1> %3323, <8 x i1> splat (i1 true), <8 x i1> %3332
  %3334 = select <8 x i1> %3333, <8 x double> %3271, <8 x double> %3331
  %3335 = uitofp nneg i64 %3277 to double
  %3336 = insertelement <8 x double> poison, double %3335, i64 0
  %3337 = shufflevector <8 x double> %3336, <8 x double> poison, <8 x i32> zeroinitializer
  %3338 = select <8 x i1> %3323, <8 x double> %3274, <8 x double> %3337
  %3339 = icmp samesign ugt i64 %3269, 1
  br i1 %3339, label %3267, label %3340, !llvm.loop !109

3340:                                             ; preds = %3310, %3315
  %3341 = phi <8 x double> [ %3338, %3315 ], [ %3274, %3310 ]
  %3342 = phi <8 x double> [ %3334, %3315 ], [ %3271, %3310 ]
  %3343 = phi <8 x double> [ %3330, %3315 ], [ %3270, %3310 ]
  %3344 = phi <8 x double> [ %3325, %3315 ], [ %3302, %3310 ]
  %3345 = phi <8 x double> [ %3327, %3315 ], [ %3303, %3310 ]
  %3346 = fdiv <8 x double> %3312, %3311
  br label %3347

3347:                                             ; preds = %3340, %3251
  %3348 = phi <8 x double> [ %3255, %3251 ], [ %3341, %3340 ]
  %3349 = phi <8 x double> [ zeroinitializer, %3251 ], [ %3342, %3340 ]
  %3350 = phi <8 x double> [ splat (double 1.000000e+09), %3251 ], [ %3343, %3340 ]
  %3351 = phi <8 x double> [ zeroinitializer, %3251 ], [ %3344, %3340 ]
  %3352 = phi <8 x double> [ zeroinitializer, %3251 ], [ %3345, %3340 ]
  %3353 = phi <8 x double> [ splat (double 1.000000e+09), %3251 ], [ %3346, %3340 ]
  %3354 = fsub <8 x double> %2619, %3353
  %3355 = fcmp ogt <8 x double> %3349, splat (double 1.000000e-09)
  %3356 = select <8 x i1> %3355, <8 x double> %3349, <8 x double> splat (double 1.000000e-09)
  %3357 = fdiv <8 x double> %3350, %3356
  %3358 = fadd <8 x double> %2619, %3357
  %3359 = load <8 x double>, ptr %3233, align 64, !tbaa !26, !noalias !121
  %3360 = select <8 x i1> %3240, <8 x double> %3351, <8 x double> %3359
  store <8 x double> %3360, ptr %3233, align 64, !tbaa !26, !noalias !121
  %3361 = getelementptr inbounds nuw i8, ptr %3199, i64 7936
  %3362 = load <8 x double>, ptr %3361, align 64, !tbaa !26, !noalias !121
  %3363 = select <8 x i1> %3240, <8 x double> %3352, <8 x double> %3362
  store <8 x double> %3363, ptr %3361, align 64, !tbaa !26, !noalias !121
  %3364 = getelementptr inbounds nuw i8, ptr %3199, i64 8000
  %3365 = load <8 x double>, ptr %3364, align 64, !tbaa !26, !noalias !121
  %3366 = select <8 x i1> %3240, <8 x double> %3348, <8 x double> %3365
  store <8 x double> %3366, ptr %3364, align 64, !tbaa !26, !noalias !121
  %3367 = getelementptr inbounds nuw i8, ptr %3199, i64 8064
  %3368 = load <8 x double>, ptr %3367, align 64, !tbaa !26, !noalias !121
  %3369 = select <8 x i1> %3240, <8 x double> %2619, <8 x double> %3368
  store <8 x double> %3369, ptr %3367, align 64, !tbaa !26, !noalias !121
  %3370 = select <8 x i1> %3240, <8 x double> %3354, <8 x double> %3235
  store <8 x double> %3370, ptr %3234, align 64, !tbaa !26, !noalias !121
  %3371 = select <8 x i1> %3240, <8 x double> %3358, <8 x double> %3238
  store <8 x double> %3371, ptr %3237, align 64, !tbaa !26, !noalias !121
  br label %3372

3372:                                             ; preds = %3243, %3347
  %3373 = phi <8 x double> [ %3250, %3243 ], [ %3366, %3347 ]
  %3374 = phi <8 x double> [ %3248, %3243 ], [ %3369, %3347 ]
  %3375 = phi <8 x double> [ %3246, %3243 ], [ %3363, %3347 ]
  %3376 = phi <8 x double> [ %3244, %3243 ], [ %3360, %3347 ]
  %3377 = fsub <8 x double> %2619, %3374
  %3378 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3375, <8 x double> %3377, <8 x double> %3376)
  %3379 = getelementptr inbounds nuw i8, ptr %3199, i64 6464
  %3380 = load <8 x double>, ptr %3379, align 64, !tbaa !26, !noalias !118
  %3381 = getelementptr inbounds nuw i8, ptr %3199, i64 5888
  %3382 = load <8 x double>, ptr %3381, align 64, !tbaa !26, !noalias !118
  %3383 = getelementptr inbounds nuw i8, ptr %3199, i64 7424
  %3384 = load <8 x double>, ptr %3383, align 64, !tbaa !26, !noalias !118
  %3385 = fneg <8 x double> %3384
  %3386 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3380, <8 x double> %3382, <8 x double> %3385)
  %3387 = getelementptr inbounds nuw i8, ptr %3199, i64 7360
  %3388 = load <8 x double>, ptr %3387, align 64, !tbaa !26, !noalias !118
  %3389 = fadd <8 x double> %3380, %3388
  %3390 = getelementptr inbounds nuw i8, ptr %3199, i64 8320
  %3391 = load <8 x i64>, ptr %3390, align 64, !tbaa !26, !noalias !118
  %3392 = getelementptr inbounds nuw i8, ptr %3199, i64 8672
  %3393 = load ptr, ptr %3392, align 32, !tbaa !94, !noalias !118
  %3394 = load <8 x double>, ptr %3393, align 64, !tbaa !26, !noalias !118
  %3395 = fmul <8 x double> %3380, %3394
  %3396 = icmp eq <8 x i64> %3391, zeroinitializer
  %3397 = select <8 x i1> %3396, <8 x double> %3386, <8 x double> %3395
  %3398 = getelementptr inbounds nuw i8, ptr %3199, i64 8680
  %3399 = load ptr, ptr %3398, align 8, !tbaa !95, !noalias !118
  %3400 = load <8 x double>, ptr %3399, align 64, !tbaa !26, !noalias !118
  %3401 = fsub <8 x double> splat (double 1.000000e+00), %3400
  %3402 = fmul <8 x double> %3380, %3401
  %3403 = select <8 x i1> %3396, <8 x double> %3389, <8 x double> %3402
  %3404 = fneg <8 x double> %3403
  %3405 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3404, <8 x double> %2619, <8 x double> %3397)
  %3406 = load i64, ptr %141, align 16, !tbaa !21, !noalias !118
  %3407 = sitofp i64 %3406 to double
  %3408 = insertelement <8 x double> poison, double %3407, i64 0
  %3409 = shufflevector <8 x double> %3408, <8 x double> poison, <8 x i32> zeroinitializer
  %3410 = fcmp olt <8 x double> %3373, %3409
  %3411 = and <8 x i1> %3206, %3410
  %3412 = fcmp ogt <8 x double> %3378, zeroinitializer
  %3413 = fcmp oge <8 x double> %3405, zeroinitializer
  %3414 = and <8 x i1> %3412, %3413
  %3415 = and <8 x i1> %3414, %3411
  %3416 = sext <8 x i1> %3415 to <8 x i64>
  %3417 = xor <8 x i64> %3416, splat (i64 -1)
  %3418 = fadd <8 x double> %3378, %3405
  %3419 = fcmp ogt <8 x double> %3418, zeroinitializer
  %3420 = select <8 x i1> %3419, <8 x i1> %3411, <8 x i1> zeroinitializer
  %3421 = select <8 x i1> %3420, <8 x i64> %3417, <8 x i64> zeroinitializer
  %3422 = or <8 x i64> %3421, %3416
  %3423 = fmul <8 x double> %3195, %3405
  %3424 = select <8 x i1> %3415, <8 x double> %3423, <8 x double> zeroinitializer
  %3425 = icmp eq <8 x i64> %3422, zeroinitializer
  %3426 = select <8 x i1> %3425, <8 x double> %3231, <8 x double> %3424
  %3427 = select <8 x i1> %3425, <8 x double> %3232, <8 x double> %2619
  %3428 = getelementptr inbounds nuw i8, ptr %3199, i64 6016
  store <8 x double> %3426, ptr %3428, align 64, !tbaa !26, !noalias !118
  %3429 = getelementptr inbounds nuw i8, ptr %3199, i64 5952
  store <8 x double> %3427, ptr %3429, align 64, !tbaa !26, !noalias !118
  %3430 = fmul <8 x double> %3195, %3378
  %3431 = fmul <8 x double> %3195, %3418
  %3432 = icmp eq <8 x i64> %3421, zeroinitializer
  %3433 = select <8 x i1> %3432, <8 x double> zeroinitializer, <8 x double> %3431
  %3434 = select <8 x i1> %3415, <8 x double> %3430, <8 x double> %3433
  %3435 = getelementptr inbounds nuw i8, ptr %3199, i64 6080
  store <8 x double> %3434, ptr %3435, align 64, !tbaa !26, !noalias !118
  %3436 = load i64, ptr %141, align 16, !tbaa !21, !noalias !118
  %3437 = sitofp i64 %3436 to double
  %3438 = insertelement <8 x double> poison, double %3437, i64 0
  %3439 = shufflevector <8 x double> %3438, <8 x double> poison, <8 x i32> zeroinitializer
  %3440 = select <8 x i1> %3425, <8 x double> %3439, <8 x double> %3373
  %3441 = getelementptr inbounds nuw i8, ptr %3199, i64 6144
  store <8 x double> %3440, ptr %3441, align 64, !tbaa !26, !noalias !118
  %3442 = add nuw nsw i64 %3197, 1
  %3443 = load i64, ptr %178, align 8, !tbaa !20, !noalias !118
  %3444 = icmp slt i64 %3442, %3443
  br i1 %3444, label %3196, label %3445, !llvm.loop !110

3445:                                             ; preds = %3372, %3153
  %3446 = phi i64 [ %3189, %3153 ], [ %3443, %3372 ]
  %3447 = icmp sgt i64 %3446, 0
  br i1 %3447, label %3577, label %3448

3448:                                             ; preds = %3445, %3190
  %3449 = phi i64 [ %3446, %3445 ], [ %2381, %3190 ]
  %3450 = load <8 x double>, ptr %187, align 64, !tbaa !26
  br label %3478

3451:                                             ; preds = %3649
  %3452 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3453 = icmp sgt i64 %3673, 0
  br i1 %3453, label %3454, label %3478

3454:                                             ; preds = %3451
  %3455 = load ptr, ptr %151, align 8, !tbaa !28
  br label %3456

3456:                                             ; preds = %3454, %3456
  %3457 = phi <8 x double> [ zeroinitializer, %3454 ], [ %3470, %3456 ]
  %3458 = phi <8 x double> [ zeroinitializer, %3454 ], [ %3475, %3456 ]
  %3459 = phi i64 [ 0, %3454 ], [ %3476, %3456 ]
  %3460 = getelementptr inbounds nuw %struct.Piece, ptr %3455, i64 %3459
  %3461 = getelementptr inbounds nuw i8, ptr %3460, i64 8448
  %3462 = load <8 x i64>, ptr %3461, align 64, !tbaa !26
  %3463 = getelementptr inbounds nuw i8, ptr %3460, i64 128
  %3464 = load <8 x double>, ptr %3463, align 64, !tbaa !26
  %3465 = getelementptr inbounds nuw i8, ptr %3460, i64 6720
  %3466 = load <8 x double>, ptr %3465, align 64, !tbaa !26
  %3467 = fmul <8 x double> %3464, %3466
  %3468 = icmp eq <8 x i64> %3462, zeroinitializer
  %3469 = select <8 x i1> %3468, <8 x double> %3467, <8 x double> zeroinitializer
  %3470 = fadd <8 x double> %3457, %3469
  %3471 = getelementptr inbounds nuw i8, ptr %3460, i64 6592
  %3472 = load <8 x double>, ptr %3471, align 64, !tbaa !26
  %3473 = fmul <8 x double> %3464, %3472
  %3474 = select <8 x i1> %3468, <8 x double> %3473, <8 x double> zeroinitializer
  %3475 = fadd <8 x double> %3458, %3474
  %3476 = add nuw nsw i64 %3459, 1
  %3477 = icmp eq i64 %3476, %3673
  br i1 %3477, label %3478, label %3456, !llvm.loop !127

3478:                                             ; preds = %3456, %3448, %3451
  %3479 = phi i1 [ false, %3451 ], [ false, %3448 ], [ true, %3456 ]
  %3480 = phi <8 x double> [ %3452, %3451 ], [ %3450, %3448 ], [ %3452, %3456 ]
  %3481 = phi i64 [ %3673, %3451 ], [ %3449, %3448 ], [ %3673, %3456 ]
  %3482 = phi <8 x double> [ zeroinitializer, %3451 ], [ zeroinitializer, %3448 ], [ %3475, %3456 ]
  %3483 = phi <8 x double> [ zeroinitializer, %3451 ], [ zeroinitializer, %3448 ], [ %3470, %3456 ]
  %3484 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %3485 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3486 = fsub <8 x double> %3480, %3485
  %3487 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3484, <8 x double> %3486, <8 x double> %3483)
  %3488 = fadd <8 x double> %3482, %3484
  store <8 x double> %3487, ptr %223, align 64, !tbaa !26
  %3489 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %3490 = fcmp ule <8 x double> %3489, zeroinitializer
  %3491 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3492 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3489, <8 x double> splat (double 5.000000e-01), <8 x double> %3491)
  %3493 = fsub <8 x double> %3492, %3480
  %3494 = fcmp ogt <8 x double> %3489, splat (double 1.000000e-30)
  %3495 = select <8 x i1> %3494, <8 x double> %3489, <8 x double> splat (double 1.000000e-30)
  %3496 = fdiv <8 x double> %3493, %3495
  %3497 = fcmp ogt <8 x double> %3496, zeroinitializer
  %3498 = select <8 x i1> %3497, <8 x double> %3496, <8 x double> zeroinitializer
  %3499 = fcmp olt <8 x double> %3498, splat (double 1.000000e+00)
  %3500 = select <8 x i1> %3499, <8 x double> %3498, <8 x double> splat (double 1.000000e+00)
  %3501 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %3502 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %3503 = icmp eq <8 x i64> %3502, zeroinitializer
  %3504 = select <8 x i1> %3503, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %3505 = select <8 x i1> %3490, <8 x double> %3504, <8 x double> %3500
  %3506 = fmul <8 x double> %3501, %3505
  %3507 = fcmp ule <8 x double> %3506, zeroinitializer
  %3508 = fcmp uge <8 x double> %3506, %3501
  %3509 = or <8 x i1> %3507, %3508
  %3510 = or <8 x i1> %3490, %3509
  %3511 = fdiv <8 x double> %3501, %3495
  %3512 = select <8 x i1> %3510, <8 x double> zeroinitializer, <8 x double> %3511
  %3513 = fadd <8 x double> %3488, %3512
  %3514 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %3515 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3516 = fdiv <8 x double> splat (double 2.000000e+00), %3515
  %3517 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3518 = icmp eq <8 x i64> %3514, zeroinitializer
  %3519 = select <8 x i1> %3518, <8 x double> %3517, <8 x double> %3516
  %3520 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3521 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %3522 = fmul <8 x double> %3520, %3521
  %3523 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %3524 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %3525 = fmul <8 x double> %3524, splat (double 5.000000e-01)
  %3526 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3525, <8 x double> %3520, <8 x double> %3523)
  %3527 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %3528 = fmul <8 x double> %3520, %3527
  %3529 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3522, <8 x double> %3526, <8 x double> %3528)
  %3530 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3531 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3532 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %3533 = fmul <8 x double> %3521, %3532
  %3534 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3525, <8 x double> %3532, <8 x double> %3523)
  %3535 = fmul <8 x double> %3527, %3532
  %3536 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3533, <8 x double> %3534, <8 x double> %3535)
  %3537 = fmul <8 x double> %3531, %3536
  %3538 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3530, <8 x double> %3529, <8 x double> %3537)
  %3539 = fmul <8 x double> %3480, %3521
  %3540 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3525, <8 x double> %3480, <8 x double> %3523)
  %3541 = fmul <8 x double> %3480, %3527
  %3542 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3539, <8 x double> %3540, <8 x double> %3541)
  %3543 = fneg <8 x double> %3519
  %3544 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %3545 = fneg <8 x double> %3544
  %3546 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3543, <8 x double> %3529, <8 x double> %3545)
  %3547 = select <8 x i1> %3518, <8 x double> %3538, <8 x double> %3546
  %3548 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3519, <8 x double> %3542, <8 x double> %3547)
  %3549 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3524, <8 x double> %3480, <8 x double> %3523)
  %3550 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3521, <8 x double> %3549, <8 x double> %3527)
  %3551 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %3552 = fcmp une <8 x double> %3551, zeroinitializer
  %3553 = fadd <8 x double> %3487, %3548
  %3554 = fsub <8 x double> %3553, %3506
  %3555 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3519, <8 x double> %3550, <8 x double> %3513)
  %3556 = fdiv <8 x double> %3554, %3555
  %3557 = fsub <8 x double> %3480, %3556
  %3558 = select <8 x i1> %3552, <8 x double> %3480, <8 x double> %3557
  store <8 x double> %3558, ptr %187, align 64, !tbaa !26
  %3559 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %3560 = fneg <8 x double> %3530
  %3561 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3560, <8 x double> %3559, <8 x double> %3506)
  %3562 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %3563 = fneg <8 x double> %3531
  %3564 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3563, <8 x double> %3562, <8 x double> %3561)
  %3565 = fdiv <8 x double> %3564, %3517
  %3566 = load <8 x double>, ptr %226, align 64, !tbaa !26
  %3567 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3560, <8 x double> %3566, <8 x double> %3487)
  %3568 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %3569 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3563, <8 x double> %3568, <8 x double> %3567)
  %3570 = fdiv <8 x double> %3569, %3517
  %3571 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3506, <8 x double> %3515, <8 x double> %3559)
  %3572 = select <8 x i1> %3518, <8 x double> %3565, <8 x double> %3571
  %3573 = load <8 x double>, ptr %228, align 64, !tbaa !26
  %3574 = select <8 x i1> %3552, <8 x double> %3573, <8 x double> %3572
  store <8 x double> %3574, ptr %228, align 64, !tbaa !26
  %3575 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %3576 = select <8 x i1> %3552, <8 x double> %3575, <8 x double> %3570
  store <8 x double> %3576, ptr %229, align 64, !tbaa !26
  br i1 %3479, label %3675, label %3963

3577:                                             ; preds = %3445, %3649
  %3578 = phi i64 [ %3672, %3649 ], [ 0, %3445 ]
  %3579 = load ptr, ptr %151, align 8, !tbaa !28
  %3580 = getelementptr inbounds nuw %struct.Piece, ptr %3579, i64 %3578
  %3581 = getelementptr inbounds nuw i8, ptr %3580, i64 5952
  %3582 = load <8 x double>, ptr %3581, align 64, !tbaa !26
  %3583 = getelementptr inbounds nuw i8, ptr %3580, i64 6144
  %3584 = load <8 x double>, ptr %3583, align 64, !tbaa !26
  %3585 = getelementptr inbounds nuw i8, ptr %3580, i64 8568
  %3586 = load ptr, ptr %3585, align 8, !tbaa !88
  %3587 = getelementptr inbounds nuw i8, ptr %3580, i64 8576
  %3588 = load ptr, ptr %3587, align 64, !tbaa !89
  %3589 = getelementptr inbounds nuw i8, ptr %3580, i64 8520
  %3590 = load ptr, ptr %3589, align 8, !tbaa !59
  %3591 = load i64, ptr %141, align 16, !tbaa !21
  %3592 = icmp sgt i64 %3591, 0
  br i1 %3592, label %3608, label %3593

3593:                                             ; preds = %3608, %3577
  %3594 = getelementptr inbounds nuw i8, ptr %3580, i64 8320
  %3595 = load <8 x i64>, ptr %3594, align 64, !tbaa !26
  %3596 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3595)
  %3597 = icmp eq i64 %3596, 0
  %3598 = load i64, ptr %142, align 8, !tbaa !22
  %3599 = icmp sgt i64 %3598, 0
  br i1 %3597, label %3605, label %3600

3600:                                             ; preds = %3593
  br i1 %3599, label %3601, label %3649

3601:                                             ; preds = %3600
  %3602 = getelementptr inbounds nuw i8, ptr %3580, i64 8672
  %3603 = getelementptr inbounds nuw i8, ptr %3580, i64 8680
  %3604 = getelementptr inbounds nuw i8, ptr %3580, i64 8640
  br label %3624

3605:                                             ; preds = %3593
  br i1 %3599, label %3606, label %3649

3606:                                             ; preds = %3605
  %3607 = getelementptr inbounds nuw i8, ptr %3580, i64 8640
  br label %3642

3608:                                             ; preds = %3577, %3608
  %3609 = phi <8 x double> [ %3621, %3608 ], [ %3582, %3577 ]
  %3610 = phi i64 [ %3611, %3608 ], [ %3591, %3577 ]
  %3611 = add nsw i64 %3610, -1
  %3612 = uitofp nneg i64 %3611 to double
  %3613 = insertelement <8 x double> poison, double %3612, i64 0
  %3614 = shufflevector <8 x double> %3613, <8 x double> poison, <8 x i32> zeroinitializer
  %3615 = fcmp ugt <8 x double> %3584, %3614
  %3616 = getelementptr inbounds nuw <8 x double>, ptr %3586, i64 %3611
  %3617 = load <8 x double>, ptr %3616, align 64, !tbaa !26
  %3618 = getelementptr inbounds nuw <8 x double>, ptr %3588, i64 %3611
  %3619 = load <8 x double>, ptr %3618, align 64, !tbaa !26
  %3620 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3619, <8 x double> %3609, <8 x double> %3617)
  %3621 = select <8 x i1> %3615, <8 x double> %3620, <8 x double> %3582
  %3622 = getelementptr inbounds nuw <8 x double>, ptr %3590, i64 %3611
  store <8 x double> %3621, ptr %3622, align 64, !tbaa !26
  %3623 = icmp samesign ugt i64 %3610, 1
  br i1 %3623, label %3608, label %3593, !llvm.loop !128

3624:                                             ; preds = %3601, %3624
  %3625 = phi i64 [ 0, %3601 ], [ %3639, %3624 ]
  %3626 = phi <8 x double> [ %3582, %3601 ], [ %3636, %3624 ]
  %3627 = load <8 x i64>, ptr %3594, align 64, !tbaa !26
  %3628 = load ptr, ptr %3602, align 32, !tbaa !94
  %3629 = getelementptr inbounds nuw <8 x double>, ptr %3628, i64 %3625
  %3630 = load <8 x double>, ptr %3629, align 64, !tbaa !26
  %3631 = load ptr, ptr %3603, align 8, !tbaa !95
  %3632 = getelementptr inbounds nuw <8 x double>, ptr %3631, i64 %3625
  %3633 = load <8 x double>, ptr %3632, align 64, !tbaa !26
  %3634 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3633, <8 x double> %3626, <8 x double> %3630)
  %3635 = icmp eq <8 x i64> %3627, zeroinitializer
  %3636 = select <8 x i1> %3635, <8 x double> %3582, <8 x double> %3634
  %3637 = load ptr, ptr %3604, align 64, !tbaa !129
  %3638 = getelementptr inbounds nuw <8 x double>, ptr %3637, i64 %3625
  store <8 x double> %3636, ptr %3638, align 64, !tbaa !26
  %3639 = add nuw nsw i64 %3625, 1
  %3640 = load i64, ptr %142, align 8, !tbaa !22
  %3641 = icmp slt i64 %3639, %3640
  br i1 %3641, label %3624, label %3649, !llvm.loop !130

3642:                                             ; preds = %3606, %3642
  %3643 = phi i64 [ 0, %3606 ], [ %3646, %3642 ]
  %3644 = load ptr, ptr %3607, align 64, !tbaa !129
  %3645 = getelementptr inbounds nuw <8 x double>, ptr %3644, i64 %3643
  store <8 x double> %3582, ptr %3645, align 64, !tbaa !26
  %3646 = add nuw nsw i64 %3643, 1
  %3647 = load i64, ptr %142, align 8, !tbaa !22
  %3648 = icmp slt i64 %3646, %3647
  br i1 %3648, label %3642, label %3649, !llvm.loop !131

3649:                                             ; preds = %3624, %3642, %3600, %3605
  %3650 = phi <8 x double> [ %3582, %3605 ], [ %3582, %3600 ], [ %3582, %3642 ], [ %3636, %3624 ]
  %3651 = load <8 x i64>, ptr %3594, align 64, !tbaa !26
  %3652 = getelementptr inbounds nuw i8, ptr %3580, i64 6656
  %3653 = load <8 x double>, ptr %3652, align 64, !tbaa !26
  %3654 = icmp eq <8 x i64> %3651, zeroinitializer
  %3655 = select <8 x i1> %3654, <8 x double> zeroinitializer, <8 x double> %3653
  %3656 = fsub <8 x double> splat (double 1.000000e+00), %3655
  %3657 = getelementptr inbounds nuw i8, ptr %3580, i64 5888
  %3658 = load <8 x double>, ptr %3657, align 64, !tbaa !26
  %3659 = fmul <8 x double> %3655, %3658
  %3660 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3656, <8 x double> %3650, <8 x double> %3659)
  %3661 = getelementptr inbounds nuw i8, ptr %3580, i64 6848
  store <8 x double> %3660, ptr %3661, align 64, !tbaa !26
  %3662 = getelementptr inbounds nuw i8, ptr %3580, i64 6592
  %3663 = load <8 x double>, ptr %3662, align 64, !tbaa !26
  %3664 = fsub <8 x double> %3658, %3650
  %3665 = fmul <8 x double> %3664, %3663
  %3666 = getelementptr inbounds nuw i8, ptr %3580, i64 6720
  store <8 x double> %3665, ptr %3666, align 64, !tbaa !26
  %3667 = getelementptr inbounds nuw i8, ptr %3580, i64 3200
  %3668 = load <8 x double>, ptr %3667, align 64, !tbaa !26
  %3669 = fdiv <8 x double> %3665, %3668
  %3670 = fsub <8 x double> %3658, %3669
  %3671 = getelementptr inbounds nuw i8, ptr %3580, i64 6784
  store <8 x double> %3670, ptr %3671, align 64, !tbaa !26
  %3672 = add nuw nsw i64 %3578, 1
  %3673 = load i64, ptr %178, align 8, !tbaa !20
  %3674 = icmp slt i64 %3672, %3673
  br i1 %3674, label %3577, label %3451, !llvm.loop !132

3675:                                             ; preds = %3478, %3897
  %3676 = phi i64 [ %3960, %3897 ], [ 0, %3478 ]
  %3677 = phi <8 x double> [ %3959, %3897 ], [ zeroinitializer, %3478 ]
  %3678 = load ptr, ptr %151, align 8, !tbaa !28
  %3679 = getelementptr inbounds nuw %struct.Piece, ptr %3678, i64 %3676
  %3680 = getelementptr inbounds nuw i8, ptr %3679, i64 6016
  %3681 = load <8 x double>, ptr %3680, align 64, !tbaa !26
  %3682 = getelementptr inbounds nuw i8, ptr %3679, i64 6080
  %3683 = load <8 x double>, ptr %3682, align 64, !tbaa !26
  %3684 = fadd <8 x double> %3681, %3683
  %3685 = getelementptr inbounds nuw i8, ptr %3679, i64 5952
  %3686 = load <8 x double>, ptr %3685, align 64, !tbaa !26
  %3687 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %3688 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3687, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3689 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3687, <8 x double> %3688, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3690 = getelementptr inbounds nuw i8, ptr %3679, i64 7168
  %3691 = load <8 x double>, ptr %3690, align 64, !tbaa !26
  %3692 = getelementptr inbounds nuw i8, ptr %3679, i64 1280
  %3693 = load <8 x double>, ptr %3692, align 64, !tbaa !26
  %3694 = fmul <8 x double> %3691, %3693
  %3695 = getelementptr inbounds nuw i8, ptr %3679, i64 6848
  %3696 = load <8 x double>, ptr %3695, align 64, !tbaa !26
  %3697 = fsub <8 x double> %3696, %3686
  %3698 = fmul <8 x double> %3694, %3697
  %3699 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3689, <8 x double> %3684, <8 x double> %3698)
  %3700 = getelementptr inbounds nuw i8, ptr %3679, i64 5696
  %3701 = load <8 x double>, ptr %3700, align 64, !tbaa !26, !noalias !133
  %3702 = getelementptr inbounds nuw i8, ptr %3679, i64 4160
  %3703 = load <8 x double>, ptr %3702, align 64, !tbaa !26, !noalias !133
  %3704 = fneg <8 x double> %3701
  %3705 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3704, <8 x double> %3703, <8 x double> %3684)
  %3706 = getelementptr inbounds nuw i8, ptr %3679, i64 5760
  %3707 = load <8 x double>, ptr %3706, align 64, !tbaa !26, !noalias !133
  %3708 = getelementptr inbounds nuw i8, ptr %3679, i64 5056
  %3709 = load <8 x double>, ptr %3708, align 64, !tbaa !26, !noalias !133
  %3710 = fneg <8 x double> %3707
  %3711 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3710, <8 x double> %3709, <8 x double> %3705)
  %3712 = getelementptr inbounds nuw i8, ptr %3679, i64 5632
  %3713 = load <8 x double>, ptr %3712, align 64, !tbaa !26, !noalias !133
  %3714 = fdiv <8 x double> %3711, %3713
  %3715 = getelementptr inbounds nuw i8, ptr %3679, i64 1600
  %3716 = load <8 x double>, ptr %3715, align 64, !tbaa !26, !noalias !133
  %3717 = fsub <8 x double> %3716, %3714
  %3718 = getelementptr inbounds nuw i8, ptr %3679, i64 4032
  %3719 = load <8 x double>, ptr %3718, align 64, !tbaa !26, !noalias !133
  %3720 = getelementptr inbounds nuw i8, ptr %3679, i64 7552
  %3721 = load <8 x double>, ptr %3720, align 64, !tbaa !26, !noalias !133
  %3722 = fsub <8 x double> %3719, %3721
  %3723 = getelementptr inbounds nuw i8, ptr %3679, i64 3904
  %3724 = load <8 x double>, ptr %3723, align 64, !tbaa !26, !noalias !133
  %3725 = getelementptr inbounds nuw i8, ptr %3679, i64 2944
  %3726 = load <8 x double>, ptr %3725, align 64, !tbaa !26, !noalias !133
  %3727 = getelementptr inbounds nuw i8, ptr %3679, i64 8320
  %3728 = load <8 x i64>, ptr %3727, align 64, !tbaa !26, !noalias !133
  %3729 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3728)
  %3730 = icmp eq i64 %3729, 0
  br i1 %3730, label %3859, label %3731

3731:                                             ; preds = %3675
  %3732 = fcmp ogt <8 x double> %3722, %3717
  %3733 = getelementptr inbounds nuw i8, ptr %3679, i64 7680
  %3734 = load <8 x double>, ptr %3733, align 64, !tbaa !26, !noalias !133
  %3735 = fcmp oeq <8 x double> %3734, zeroinitializer
  %3736 = select <8 x i1> %3735, <8 x i1> %3732, <8 x i1> zeroinitializer
  %3737 = select <8 x i1> %3736, <8 x i64> %3728, <8 x i64> zeroinitializer
  %3738 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3737)
  %3739 = icmp eq i64 %3738, 0
  br i1 %3739, label %3812, label %3740

3740:                                             ; preds = %3731
  %3741 = fsub <8 x double> %3722, %3717
  %3742 = getelementptr inbounds nuw i8, ptr %3679, i64 832
  %3743 = load <8 x double>, ptr %3742, align 64, !tbaa !26, !noalias !133
  %3744 = fdiv <8 x double> %3741, %3743
  %3745 = getelementptr inbounds nuw i8, ptr %3679, i64 8552
  %3746 = load ptr, ptr %3745, align 8, !tbaa !69, !noalias !133
  %3747 = load i64, ptr %141, align 16, !tbaa !21, !noalias !133
  %3748 = add nsw i64 %3747, -1
  %3749 = getelementptr inbounds <8 x double>, ptr %3746, i64 %3748
  %3750 = load <8 x double>, ptr %3749, align 64, !tbaa !26, !noalias !133
  %3751 = icmp sgt i64 %3747, 1
  br i1 %3751, label %3752, label %3804

3752:                                             ; preds = %3740
  %3753 = getelementptr inbounds nuw i8, ptr %3679, i64 8512
  %3754 = load i64, ptr %3753, align 64, !tbaa !31, !noalias !133
  %3755 = getelementptr inbounds nuw i8, ptr %3679, i64 4672
  %3756 = getelementptr inbounds nuw i8, ptr %3679, i64 1536
  %3757 = getelementptr inbounds nuw i8, ptr %3679, i64 8608
  br label %3758

3758:                                             ; preds = %3752, %3801
  %3759 = phi <8 x double> [ %3724, %3752 ], [ %3796, %3801 ]
  %3760 = phi i64 [ %3748, %3752 ], [ %3802, %3801 ]
  %3761 = phi <8 x double> [ %3750, %3752 ], [ %3784, %3801 ]
  %3762 = phi <8 x i64> [ %3737, %3752 ], [ %3788, %3801 ]
  %3763 = phi <8 x double> [ %3744, %3752 ], [ %3795, %3801 ]
  %3764 = icmp slt i64 %3760, %3754
  br i1 %3764, label %3765, label %3771

3765:                                             ; preds = %3758
  %3766 = load ptr, ptr %3757, align 32, !tbaa !74, !noalias !133
  %3767 = getelementptr inbounds nuw <8 x double>, ptr %3766, i64 %3760
  %3768 = load <8 x double>, ptr %3767, align 64, !tbaa !26, !noalias !133
  %3769 = load <8 x double>, ptr %3756, align 64, !tbaa !26, !noalias !133
  %3770 = fmul <8 x double> %3768, %3769
  br label %3779

3771:                                             ; preds = %3758
  %3772 = load <8 x double>, ptr %3755, align 64, !tbaa !26, !noalias !133
  %3773 = load <8 x double>, ptr %3756, align 64, !tbaa !26, !noalias !133
  %3774 = load ptr, ptr %3757, align 32, !tbaa !74, !noalias !133
  %3775 = getelementptr inbounds nuw <8 x double>, ptr %3774, i64 %3760
  %3776 = load <8 x double>, ptr %3775, align 64, !tbaa !26, !noalias !133
  %3777 = fsub <8 x double> %3772, %3773
  %3778 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3776, <8 x double> %3777, <8 x double> %3773)
  br label %3779

3779:                                             ; preds = %3771, %3765
  %3780 = phi <8 x double> [ %3770, %3765 ], [ %3778, %3771 ]
  %3781 = getelementptr inbounds nuw <8 x double>, ptr %3746, i64 %3760
  %3782 = load <8 x double>, ptr %3781, align 64, !tbaa !26, !noalias !133
  %3783 = icmp eq <8 x i64> %3762, zeroinitializer
  %3784 = select <8 x i1> %3783, <8 x double> %3761, <8 x double> %3782
  %3785 = fsub <8 x double> %3759, %3780
  %3786 = fmul <8 x double> %3785, %3784
  %3787 = fcmp olt <8 x double> %3786, %3763
  %3788 = select <8 x i1> %3787, <8 x i64> %3762, <8 x i64> zeroinitializer
  %3789 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3788)
  %3790 = icmp eq i64 %3789, 0
  br i1 %3790, label %3804, label %3791

3791:                                             ; preds = %3779
  %3792 = fneg <8 x double> %3784
  %3793 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3792, <8 x double> %3785, <8 x double> %3763)
  %3794 = icmp eq <8 x i64> %3788, zeroinitializer
  %3795 = select <8 x i1> %3794, <8 x double> %3763, <8 x double> %3793
  %3796 = select <8 x i1> %3794, <8 x double> %3759, <8 x double> %3780
  %3797 = icmp eq i64 %3760, 1
  br i1 %3797, label %3798, label %3801

3798:                                             ; preds = %3791
  %3799 = load <8 x double>, ptr %3746, align 64, !tbaa !26, !noalias !133
  %3800 = select <8 x i1> %3794, <8 x double> %3784, <8 x double> %3799
  br label %3804

3801:                                             ; preds = %3791
  %3802 = add nsw i64 %3760, -1
  %3803 = icmp sgt i64 %3760, 1
  br i1 %3803, label %3758, label %3804, !llvm.loop !75

3804:                                             ; preds = %3801, %3779, %3798, %3740
  %3805 = phi <8 x double> [ %3744, %3740 ], [ %3795, %3798 ], [ %3763, %3779 ], [ %3795, %3801 ]
  %3806 = phi <8 x double> [ %3724, %3740 ], [ %3796, %3798 ], [ %3759, %3779 ], [ %3796, %3801 ]
  %3807 = phi <8 x double> [ %3750, %3740 ], [ %3800, %3798 ], [ %3784, %3779 ], [ %3784, %3801 ]
  %3808 = fdiv <8 x double> %3805, %3807
  %3809 = fsub <8 x double> %3806, %3808
  %3810 = icmp eq <8 x i64> %3737, zeroinitializer
  %3811 = select <8 x i1> %3810, <8 x double> %3724, <8 x double> %3809
  br label %3812

3812:                                             ; preds = %3804, %3731
  %3813 = phi <8 x double> [ %3811, %3804 ], [ %3724, %3731 ]
  %3814 = getelementptr inbounds nuw i8, ptr %3679, i64 2560
  %3815 = load <8 x double>, ptr %3814, align 64, !tbaa !26, !noalias !133
  %3816 = getelementptr inbounds nuw i8, ptr %3679, i64 2624
  %3817 = load <8 x double>, ptr %3816, align 64, !tbaa !26, !noalias !133
  %3818 = getelementptr inbounds nuw i8, ptr %3679, i64 2688
  %3819 = load <8 x double>, ptr %3818, align 64, !tbaa !26, !noalias !133
  %3820 = getelementptr inbounds nuw i8, ptr %3679, i64 2752
  %3821 = load <8 x double>, ptr %3820, align 64, !tbaa !26, !noalias !133
  %3822 = load <8 x double>, ptr %3679, align 64, !tbaa !26, !noalias !133
  %3823 = fmul <8 x double> %3822, splat (double 2.000000e-05)
  br label %3824

3824:                                             ; preds = %3812, %3824
  %3825 = phi <8 x i64> [ splat (i64 -1), %3812 ], [ %3842, %3824 ]
  %3826 = phi i32 [ 0, %3812 ], [ %3843, %3824 ]
  %3827 = phi <8 x double> [ %3726, %3812 ], [ %3839, %3824 ]
  %3828 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3827, <8 x double> %3821, <8 x double> %3819)
  %3829 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3827, <8 x double> %3828, <8 x double> %3817)
  %3830 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3827, <8 x double> %3829, <8 x double> %3815)
  %3831 = fsub <8 x double> %3830, %3813
  %3832 = fmul <8 x double> %3827, splat (double 3.000000e+00)
  %3833 = fmul <8 x double> %3832, %3821
  %3834 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3819, <8 x double> splat (double 2.000000e+00), <8 x double> %3833)
  %3835 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3827, <8 x double> %3834, <8 x double> %3817)
  %3836 = fdiv <8 x double> %3831, %3835
  %3837 = fsub <8 x double> %3827, %3836
  %3838 = icmp eq <8 x i64> %3825, zeroinitializer
  %3839 = select <8 x i1> %3838, <8 x double> %3827, <8 x double> %3837
  %3840 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3836)
  %3841 = fcmp oge <8 x double> %3840, %3823
  %3842 = select <8 x i1> %3841, <8 x i64> %3825, <8 x i64> zeroinitializer
  %3843 = add nuw nsw i32 %3826, 1
  %3844 = icmp samesign ult i32 %3826, 3
  %3845 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3842)
  %3846 = icmp ne i64 %3845, 0
  %3847 = select i1 %3844, i1 %3846, i1 false
  br i1 %3847, label %3824, label %3848, !llvm.loop !76

3848:                                             ; preds = %3824
  %3849 = fmul <8 x double> %3822, splat (double 2.800000e-01)
  %3850 = fcmp ogt <8 x double> %3839, %3849
  %3851 = select <8 x i1> %3850, <8 x double> %3839, <8 x double> %3849
  %3852 = fcmp olt <8 x double> %3851, %3822
  %3853 = select <8 x i1> %3852, <8 x double> %3851, <8 x double> %3822
  %3854 = icmp eq <8 x i64> %3728, zeroinitializer
  %3855 = select <8 x i1> %3854, <8 x double> %3726, <8 x double> %3853
  %3856 = fcmp olt <8 x double> %3722, %3717
  %3857 = select <8 x i1> %3854, <8 x i1> splat (i1 true), <8 x i1> %3856
  %3858 = select <8 x i1> %3857, <8 x double> %3722, <8 x double> %3717
  br label %3859

3859:                                             ; preds = %3848, %3675
  %3860 = phi <8 x double> [ %3858, %3848 ], [ %3722, %3675 ]
  %3861 = phi <8 x double> [ %3855, %3848 ], [ %3726, %3675 ]
  %3862 = phi <8 x double> [ %3813, %3848 ], [ %3724, %3675 ]
  %3863 = fsub <8 x double> %3717, %3860
  %3864 = fsub <8 x double> %3861, %3726
  %3865 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3864)
  %3866 = getelementptr inbounds nuw i8, ptr %3679, i64 3072
  %3867 = load <8 x double>, ptr %3866, align 64, !tbaa !26
  %3868 = fsub <8 x double> %3863, %3867
  %3869 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3868)
  %3870 = getelementptr inbounds nuw i8, ptr %3679, i64 832
  %3871 = load <8 x double>, ptr %3870, align 64, !tbaa !26
  %3872 = fdiv <8 x double> %3869, %3871
  %3873 = icmp eq <8 x i64> %3728, zeroinitializer
  %3874 = select <8 x i1> %3873, <8 x double> %3872, <8 x double> %3865
  br i1 %3730, label %3897, label %3875

3875:                                             ; preds = %3859
  %3876 = getelementptr inbounds nuw i8, ptr %3679, i64 7104
  %3877 = load <8 x double>, ptr %3876, align 64, !tbaa !26
  %3878 = fmul <8 x double> %3877, splat (double 2.000000e+00)
  %3879 = getelementptr inbounds nuw i8, ptr %3679, i64 384
  %3880 = load <8 x double>, ptr %3879, align 64, !tbaa !26
  %3881 = getelementptr inbounds nuw i8, ptr %3679, i64 448
  %3882 = load <8 x double>, ptr %3881, align 64, !tbaa !26
  %3883 = getelementptr inbounds nuw i8, ptr %3679, i64 512
  %3884 = load <8 x double>, ptr %3883, align 64, !tbaa !26
  %3885 = fmul <8 x double> %3686, %3884
  %3886 = fmul <8 x double> %3885, splat (double 0x3FD5555555555555)
  %3887 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3882, <8 x double> splat (double 5.000000e-01), <8 x double> %3886)
  %3888 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3686, <8 x double> %3887, <8 x double> %3880)
  %3889 = fmul <8 x double> %3686, %3888
  %3890 = getelementptr inbounds nuw i8, ptr %3679, i64 768
  %3891 = load <8 x double>, ptr %3890, align 64, !tbaa !26
  %3892 = fneg <8 x double> %3891
  %3893 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3892, <8 x double> %3686, <8 x double> %3889)
  %3894 = fmul <8 x double> %3878, %3893
  %3895 = fsub <8 x double> %3699, %3894
  %3896 = select <8 x i1> %3873, <8 x double> %3699, <8 x double> %3895
  br label %3897

3897:                                             ; preds = %3859, %3875
  %3898 = phi <8 x double> [ %3896, %3875 ], [ %3699, %3859 ]
  %3899 = getelementptr inbounds nuw i8, ptr %3679, i64 3264
  store <8 x double> %3714, ptr %3899, align 64, !tbaa !26
  store <8 x double> %3863, ptr %3866, align 64, !tbaa !26
  %3900 = getelementptr inbounds nuw i8, ptr %3679, i64 3136
  store <8 x double> %3860, ptr %3900, align 64, !tbaa !26
  %3901 = getelementptr inbounds nuw i8, ptr %3679, i64 3008
  %3902 = load <8 x double>, ptr %3901, align 64, !tbaa !26
  %3903 = select <8 x i1> %3873, <8 x double> %3902, <8 x double> %3862
  store <8 x double> %3903, ptr %3901, align 64, !tbaa !26
  %3904 = select <8 x i1> %3873, <8 x double> %3726, <8 x double> %3861
  store <8 x double> %3904, ptr %3725, align 64, !tbaa !26
  %3905 = getelementptr inbounds nuw i8, ptr %3679, i64 3520
  store <8 x double> %3683, ptr %3905, align 64, !tbaa !26
  %3906 = getelementptr inbounds nuw i8, ptr %3679, i64 3584
  store <8 x double> %3686, ptr %3906, align 64, !tbaa !26
  %3907 = getelementptr inbounds nuw i8, ptr %3679, i64 3200
  %3908 = load <8 x double>, ptr %3907, align 64, !tbaa !26
  %3909 = getelementptr inbounds nuw i8, ptr %3679, i64 5888
  %3910 = load <8 x double>, ptr %3909, align 64, !tbaa !26
  %3911 = fsub <8 x double> %3910, %3686
  %3912 = getelementptr inbounds nuw i8, ptr %3679, i64 8256
  %3913 = load <8 x double>, ptr %3912, align 64, !tbaa !26
  %3914 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3908, <8 x double> %3913, <8 x double> splat (double 1.000000e+00))
  %3915 = fdiv <8 x double> %3911, %3914
  %3916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3686, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3917 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3686, <8 x double> %3916, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3918 = fneg <8 x double> %3681
  %3919 = fmul <8 x double> %3917, %3918
  %3920 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3908, <8 x double> %3915, <8 x double> %3919)
  %3921 = getelementptr inbounds nuw i8, ptr %3679, i64 3456
  store <8 x double> %3920, ptr %3921, align 64, !tbaa !26
  %3922 = getelementptr inbounds nuw i8, ptr %3679, i64 6784
  %3923 = load <8 x double>, ptr %3922, align 64, !tbaa !26
  %3924 = fsub <8 x double> %3910, %3923
  %3925 = fsub <8 x double> %3924, %3915
  %3926 = getelementptr inbounds nuw i8, ptr %3679, i64 3648
  store <8 x double> %3925, ptr %3926, align 64, !tbaa !26
  %3927 = getelementptr inbounds nuw i8, ptr %3679, i64 7360
  %3928 = load <8 x double>, ptr %3927, align 64, !tbaa !26
  %3929 = getelementptr inbounds nuw i8, ptr %3679, i64 7424
  %3930 = load <8 x double>, ptr %3929, align 64, !tbaa !26
  %3931 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3928, <8 x double> %3686, <8 x double> %3930)
  %3932 = getelementptr inbounds nuw i8, ptr %3679, i64 6720
  %3933 = load <8 x double>, ptr %3932, align 64, !tbaa !26
  %3934 = getelementptr inbounds nuw i8, ptr %3679, i64 4224
  %3935 = load <8 x double>, ptr %3934, align 64, !tbaa !26
  %3936 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3704, <8 x double> %3935, <8 x double> %3933)
  %3937 = getelementptr inbounds nuw i8, ptr %3679, i64 5120
  %3938 = load <8 x double>, ptr %3937, align 64, !tbaa !26
  %3939 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3710, <8 x double> %3938, <8 x double> %3936)
  %3940 = fdiv <8 x double> %3939, %3713
  %3941 = getelementptr inbounds nuw i8, ptr %3679, i64 3328
  store <8 x double> %3940, ptr %3941, align 64, !tbaa !26
  %3942 = getelementptr inbounds nuw i8, ptr %3679, i64 4288
  %3943 = load <8 x double>, ptr %3942, align 64, !tbaa !26
  %3944 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3704, <8 x double> %3943, <8 x double> %3898)
  %3945 = getelementptr inbounds nuw i8, ptr %3679, i64 5184
  %3946 = load <8 x double>, ptr %3945, align 64, !tbaa !26
  %3947 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3710, <8 x double> %3946, <8 x double> %3944)
  %3948 = fdiv <8 x double> %3947, %3713
  %3949 = getelementptr inbounds nuw i8, ptr %3679, i64 3392
  store <8 x double> %3948, ptr %3949, align 64, !tbaa !26
  %3950 = getelementptr inbounds nuw i8, ptr %3679, i64 4608
  %3951 = load <8 x double>, ptr %3950, align 64, !tbaa !26
  %3952 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3704, <8 x double> %3951, <8 x double> %3931)
  %3953 = getelementptr inbounds nuw i8, ptr %3679, i64 5504
  %3954 = load <8 x double>, ptr %3953, align 64, !tbaa !26
  %3955 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3710, <8 x double> %3954, <8 x double> %3952)
  %3956 = fdiv <8 x double> %3955, %3713
  %3957 = getelementptr inbounds nuw i8, ptr %3679, i64 3712
  store <8 x double> %3956, ptr %3957, align 64, !tbaa !26
  %3958 = fcmp ogt <8 x double> %3677, %3874
  %3959 = select <8 x i1> %3958, <8 x double> %3677, <8 x double> %3874
  %3960 = add nuw nsw i64 %3676, 1
  %3961 = load i64, ptr %178, align 8, !tbaa !20
  %3962 = icmp slt i64 %3960, %3961
  br i1 %3962, label %3675, label %3963, !llvm.loop !136

3963:                                             ; preds = %3897, %3478
  %3964 = phi <8 x double> [ zeroinitializer, %3478 ], [ %3959, %3897 ]
  %3965 = phi i64 [ %3481, %3478 ], [ %3961, %3897 ]
  %3966 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %3967 = fadd <8 x double> %3966, splat (double 1.000000e+00)
  store <8 x double> %3967, ptr %195, align 64, !tbaa !26
  %3968 = icmp sgt i64 %3965, 0
  br i1 %3968, label %3969, label %3975

3969:                                             ; preds = %3963
  %3970 = load ptr, ptr %151, align 8, !tbaa !28
  %3971 = load i64, ptr %141, align 16, !tbaa !21
  %3972 = add nsw i64 %3971, -1
  br label %3997

3973:                                             ; preds = %4023
  %3974 = fcmp oeq <8 x double> %4038, zeroinitializer
  br label %3975

3975:                                             ; preds = %3973, %3963
  %3976 = phi <8 x i1> [ splat (i1 true), %3963 ], [ %3974, %3973 ]
  %3977 = load i64, ptr %230, align 32, !tbaa !24
  %3978 = sitofp i64 %3977 to double
  %3979 = insertelement <8 x double> poison, double %3978, i64 0
  %3980 = shufflevector <8 x double> %3979, <8 x double> poison, <8 x i32> zeroinitializer
  %3981 = fcmp oge <8 x double> %3967, %3980
  %3982 = and <8 x i1> %3976, %3981
  %3983 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %3984 = load <8 x double>, ptr %231, align 64, !tbaa !26
  %3985 = fcmp olt <8 x double> %3964, %3984
  %3986 = or <8 x i1> %3985, %3982
  %3987 = fcmp oge <8 x double> %3967, splat (double 2.000000e+01)
  %3988 = or <8 x i1> %3987, %3986
  %3989 = select <8 x i1> %3988, <8 x i64> %3983, <8 x i64> zeroinitializer
  store <8 x i64> %3989, ptr %155, align 64, !tbaa !26
  %3990 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3989)
  %3991 = icmp eq i64 %3990, 0
  br i1 %3991, label %550, label %3992, !llvm.loop !56

3992:                                             ; preds = %3975
  %3993 = load i64, ptr %178, align 8, !tbaa !20
  %3994 = icmp sgt i64 %3993, 0
  br i1 %3994, label %3995, label %4041

3995:                                             ; preds = %3992
  %3996 = icmp eq <8 x i64> %3989, zeroinitializer
  br label %4347

3997:                                             ; preds = %3969, %4023
  %3998 = phi i64 [ 0, %3969 ], [ %4039, %4023 ]
  %3999 = phi <8 x double> [ zeroinitializer, %3969 ], [ %4038, %4023 ]
  %4000 = getelementptr inbounds nuw %struct.Piece, ptr %3970, i64 %3998
  %4001 = getelementptr inbounds nuw i8, ptr %4000, i64 8512
  %4002 = load i64, ptr %4001, align 64, !tbaa !31
  %4003 = icmp sgt i64 %3971, %4002
  br i1 %4003, label %4012, label %4004

4004:                                             ; preds = %3997
  %4005 = getelementptr inbounds nuw i8, ptr %4000, i64 8608
  %4006 = load ptr, ptr %4005, align 32, !tbaa !74
  %4007 = getelementptr inbounds <8 x double>, ptr %4006, i64 %3972
  %4008 = load <8 x double>, ptr %4007, align 64, !tbaa !26
  %4009 = getelementptr inbounds nuw i8, ptr %4000, i64 1536
  %4010 = load <8 x double>, ptr %4009, align 64, !tbaa !26
  %4011 = fmul <8 x double> %4008, %4010
  br label %4023

4012:                                             ; preds = %3997
  %4013 = getelementptr inbounds nuw i8, ptr %4000, i64 3776
  %4014 = load <8 x double>, ptr %4013, align 64, !tbaa !26
  %4015 = getelementptr inbounds nuw i8, ptr %4000, i64 1536
  %4016 = load <8 x double>, ptr %4015, align 64, !tbaa !26
  %4017 = getelementptr inbounds nuw i8, ptr %4000, i64 8608
  %4018 = load ptr, ptr %4017, align 32, !tbaa !74
  %4019 = getelementptr inbounds <8 x double>, ptr %4018, i64 %3972
  %4020 = load <8 x double>, ptr %4019, align 64, !tbaa !26
  %4021 = fsub <8 x double> %4014, %4016
  %4022 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4020, <8 x double> %4021, <8 x double> %4016)
  br label %4023

4023:                                             ; preds = %4004, %4012
  %4024 = phi <8 x double> [ %4011, %4004 ], [ %4022, %4012 ]
  %4025 = getelementptr inbounds nuw i8, ptr %4000, i64 8320
  %4026 = load <8 x i64>, ptr %4025, align 64, !tbaa !26
  %4027 = getelementptr inbounds nuw i8, ptr %4000, i64 7680
  %4028 = load <8 x double>, ptr %4027, align 64, !tbaa !26
  %4029 = fcmp une <8 x double> %4028, zeroinitializer
  %4030 = getelementptr inbounds nuw i8, ptr %4000, i64 3008
  %4031 = load <8 x double>, ptr %4030, align 64, !tbaa !26
  %4032 = fcmp uge <8 x double> %4031, %4024
  %4033 = select <8 x i1> %4032, <8 x i1> splat (i1 true), <8 x i1> %4029
  %4034 = icmp eq <8 x i64> %4026, zeroinitializer
  %4035 = select <8 x i1> %4033, <8 x i1> splat (i1 true), <8 x i1> %4034
  %4036 = select <8 x i1> %4035, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4037 = fcmp ogt <8 x double> %3999, %4036
  %4038 = select <8 x i1> %4037, <8 x double> %3999, <8 x double> %4036
  %4039 = add nuw nsw i64 %3998, 1
  %4040 = icmp eq i64 %4039, %3965
  br i1 %4040, label %3973, label %3997, !llvm.loop !137

4041:                                             ; preds = %4395, %3992
  %4042 = phi i64 [ %3993, %3992 ], [ %4401, %4395 ]
  %4043 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4044 = fadd <8 x double> %4043, splat (double 1.000000e+00)
  %4045 = icmp eq <8 x i64> %3989, zeroinitializer
  %4046 = select <8 x i1> %4045, <8 x double> %4043, <8 x double> %4044
  store <8 x double> %4046, ptr %183, align 64, !tbaa !26
  %4047 = fcmp ogt <8 x double> %4046, splat (double 4.000000e+01)
  %4048 = select <8 x i1> %4047, <8 x i64> %3989, <8 x i64> zeroinitializer
  %4049 = xor <8 x i64> %4048, %3989
  %4050 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %4051 = fadd <8 x double> %4050, splat (double 1.000000e+00)
  %4052 = icmp eq <8 x i64> %4048, zeroinitializer
  %4053 = select <8 x i1> %4052, <8 x double> %4050, <8 x double> %4051
  store <8 x double> %4053, ptr %149, align 64, !tbaa !26
  %4054 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %4055 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %4056 = fsub <8 x double> %4054, %4055
  %4057 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4056)
  %4058 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4059 = fmul <8 x double> %4058, splat (double 1.500000e+00)
  %4060 = fcmp ogt <8 x double> %4057, %4059
  %4061 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4062 = fcmp ogt <8 x double> %4061, splat (double 2.000000e-03)
  %4063 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4064 = fcmp oeq <8 x double> %4063, zeroinitializer
  %4065 = and <8 x i1> %4060, %4064
  %4066 = and <8 x i1> %4062, %4065
  %4067 = fdiv <8 x double> %4058, %4057
  %4068 = select <8 x i1> %4066, <8 x i64> %4049, <8 x i64> zeroinitializer
  %4069 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4070 = fcmp ogt <8 x double> %4069, %4061
  %4071 = select <8 x i1> %4070, <8 x double> %4069, <8 x double> %4061
  %4072 = select <8 x i1> %4066, <8 x double> zeroinitializer, <8 x double> %4071
  %4073 = icmp eq <8 x i64> %4068, zeroinitializer
  %4074 = select <8 x i1> %4073, <8 x double> %4069, <8 x double> %4072
  store <8 x double> %4074, ptr %181, align 64, !tbaa !26
  %4075 = fcmp ogt <8 x double> %4067, splat (double 5.000000e-02)
  %4076 = select <8 x i1> %4075, <8 x double> %4067, <8 x double> splat (double 5.000000e-02)
  %4077 = fcmp olt <8 x double> %4076, splat (double 0x3FEE666666666666)
  %4078 = select <8 x i1> %4077, <8 x double> %4076, <8 x double> splat (double 0x3FEE666666666666)
  %4079 = fmul <8 x double> %4061, %4078
  %4080 = fcmp ogt <8 x double> %4079, splat (double 0x3EB0C6F7A0B5ED8D)
  %4081 = select <8 x i1> %4080, <8 x double> %4079, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4082 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4083 = select <8 x i1> %4073, <8 x double> %4082, <8 x double> %4081
  store <8 x double> %4083, ptr %161, align 64, !tbaa !26
  %4084 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4085 = fadd <8 x double> %4084, splat (double 1.000000e+00)
  %4086 = select <8 x i1> %4073, <8 x double> %4084, <8 x double> %4085
  store <8 x double> %4086, ptr %146, align 64, !tbaa !26
  %4087 = xor <8 x i64> %4068, %4049
  %4088 = icmp sgt i64 %4042, 0
  br i1 %4088, label %4089, label %4188

4089:                                             ; preds = %4041
  %4090 = load ptr, ptr %151, align 8, !tbaa !28
  %4091 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4092 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4093 = fcmp une <8 x double> %4091, %4092
  %4094 = fcmp ule <8 x double> %4091, zeroinitializer
  %4095 = or <8 x i1> %4094, %4093
  %4096 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4097 = fcmp ogt <8 x double> %4061, splat (double 0x3E7AD7F29ABCAF48)
  %4098 = fcmp ogt <8 x double> %4061, splat (double 1.000000e-05)
  %4099 = fcmp ogt <8 x double> %4061, splat (double 1.000000e-04)
  br label %4100

4100:                                             ; preds = %4089, %4100
  %4101 = phi i64 [ 0, %4089 ], [ %4184, %4100 ]
  %4102 = phi <8 x double> [ splat (double 1.000000e+00), %4089 ], [ %4183, %4100 ]
  %4103 = phi <8 x i64> [ zeroinitializer, %4089 ], [ %4131, %4100 ]
  %4104 = phi <8 x i64> [ zeroinitializer, %4089 ], [ %4180, %4100 ]
  %4105 = getelementptr inbounds nuw %struct.Piece, ptr %4090, i64 %4101
  %4106 = getelementptr inbounds nuw i8, ptr %4105, i64 3072
  %4107 = load <8 x double>, ptr %4106, align 64, !tbaa !26
  %4108 = getelementptr inbounds nuw i8, ptr %4105, i64 3968
  %4109 = load <8 x double>, ptr %4108, align 64, !tbaa !26
  %4110 = getelementptr inbounds nuw i8, ptr %4105, i64 8320
  %4111 = load <8 x i64>, ptr %4110, align 64, !tbaa !26
  %4112 = xor <8 x i64> %4111, splat (i64 -1)
  %4113 = getelementptr inbounds nuw i8, ptr %4105, i64 896
  %4114 = load <8 x double>, ptr %4113, align 64, !tbaa !26
  %4115 = fmul <8 x double> %4096, %4114
  %4116 = fcmp ogt <8 x double> %4115, splat (double 0x3E7AD7F29ABCAF48)
  %4117 = fneg <8 x double> %4115
  %4118 = select <8 x i1> %4116, <8 x double> %4117, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4119 = fcmp olt <8 x double> %4107, %4118
  %4120 = select <8 x i1> %4119, <8 x i1> %4095, <8 x i1> zeroinitializer
  %4121 = select <8 x i1> %4120, <8 x i64> %4112, <8 x i64> zeroinitializer
  %4122 = fcmp ole <8 x double> %4109, zeroinitializer
  %4123 = select <8 x i1> %4122, <8 x i64> %4121, <8 x i64> zeroinitializer
  %4124 = getelementptr inbounds nuw i8, ptr %4105, i64 832
  %4125 = load <8 x double>, ptr %4124, align 64, !tbaa !26
  %4126 = fmul <8 x double> %4125, splat (double -3.000000e-07)
  %4127 = fcmp olt <8 x double> %4107, %4126
  %4128 = select <8 x i1> %4097, <8 x i1> %4127, <8 x i1> zeroinitializer
  %4129 = select <8 x i1> %4128, <8 x i64> %4123, <8 x i64> zeroinitializer
  %4130 = or <8 x i64> %4129, %4104
  %4131 = or <8 x i64> %4129, %4103
  %4132 = fcmp olt <8 x double> %4102, splat (double 3.000000e-01)
  %4133 = icmp eq <8 x i64> %4129, zeroinitializer
  %4134 = select <8 x i1> %4133, <8 x i1> splat (i1 true), <8 x i1> %4132
  %4135 = select <8 x i1> %4134, <8 x double> %4102, <8 x double> splat (double 3.000000e-01)
  %4136 = xor <8 x i64> %4123, splat (i64 -1)
  %4137 = and <8 x i64> %4121, %4136
  %4138 = select <8 x i1> %4098, <8 x i64> %4137, <8 x i64> zeroinitializer
  %4139 = fsub <8 x double> %4109, %4107
  %4140 = fdiv <8 x double> %4109, %4139
  %4141 = or <8 x i64> %4130, %4138
  %4142 = fcmp olt <8 x double> %4135, %4140
  %4143 = icmp eq <8 x i64> %4138, zeroinitializer
  %4144 = select <8 x i1> %4143, <8 x i1> splat (i1 true), <8 x i1> %4142
  %4145 = select <8 x i1> %4144, <8 x double> %4135, <8 x double> %4140
  %4146 = getelementptr inbounds nuw i8, ptr %4105, i64 3904
  %4147 = load <8 x double>, ptr %4146, align 64, !tbaa !26
  %4148 = getelementptr inbounds nuw i8, ptr %4105, i64 3008
  %4149 = load <8 x double>, ptr %4148, align 64, !tbaa !26
  %4150 = getelementptr inbounds nuw i8, ptr %4105, i64 7680
  %4151 = load <8 x double>, ptr %4150, align 64, !tbaa !26
  %4152 = fcmp oeq <8 x double> %4151, zeroinitializer
  %4153 = getelementptr inbounds nuw i8, ptr %4105, i64 1472
  %4154 = load <8 x double>, ptr %4153, align 64, !tbaa !26
  %4155 = fmul <8 x double> %4154, splat (double 0x3FEFF7CED916872B)
  %4156 = fcmp olt <8 x double> %4149, %4155
  %4157 = and <8 x i1> %4152, %4156
  %4158 = and <8 x i1> %4099, %4157
  %4159 = fsub <8 x double> %4147, %4154
  %4160 = fsub <8 x double> %4147, %4149
  %4161 = fdiv <8 x double> %4159, %4160
  %4162 = fcmp uge <8 x double> %4145, %4161
  %4163 = select <8 x i1> %4158, <8 x i1> %4162, <8 x i1> zeroinitializer
  %4164 = select <8 x i1> %4163, <8 x double> %4161, <8 x double> %4145
  %4165 = fcmp oeq <8 x double> %4151, splat (double 1.000000e+00)
  %4166 = getelementptr inbounds nuw i8, ptr %4105, i64 3264
  %4167 = load <8 x double>, ptr %4166, align 64, !tbaa !26
  %4168 = getelementptr inbounds nuw i8, ptr %4105, i64 1600
  %4169 = load <8 x double>, ptr %4168, align 64, !tbaa !26
  %4170 = fmul <8 x double> %4169, splat (double 1.000100e+00)
  %4171 = fcmp ogt <8 x double> %4167, %4170
  %4172 = and <8 x i1> %4165, %4171
  %4173 = and <8 x i1> %4099, %4172
  %4174 = getelementptr inbounds nuw i8, ptr %4105, i64 4160
  %4175 = load <8 x double>, ptr %4174, align 64, !tbaa !26
  %4176 = fsub <8 x double> %4169, %4175
  %4177 = fsub <8 x double> %4167, %4175
  %4178 = fdiv <8 x double> %4176, %4177
  %4179 = select <8 x i1> %4172, <8 x i1> %4099, <8 x i1> %4158
  %4180 = select <8 x i1> %4179, <8 x i64> splat (i64 -1), <8 x i64> %4141
  %4181 = fcmp uge <8 x double> %4164, %4178
  %4182 = select <8 x i1> %4173, <8 x i1> %4181, <8 x i1> zeroinitializer
  %4183 = select <8 x i1> %4182, <8 x double> %4178, <8 x double> %4164
  %4184 = add nuw nsw i64 %4101, 1
  %4185 = icmp eq i64 %4184, %4042
  br i1 %4185, label %4186, label %4100, !llvm.loop !138

4186:                                             ; preds = %4100
  %4187 = icmp eq <8 x i64> %4131, zeroinitializer
  br label %4188

4188:                                             ; preds = %4186, %4041
  %4189 = phi <8 x i64> [ zeroinitializer, %4041 ], [ %4180, %4186 ]
  %4190 = phi <8 x i1> [ splat (i1 true), %4041 ], [ %4187, %4186 ]
  %4191 = phi <8 x double> [ splat (double 1.000000e+00), %4041 ], [ %4183, %4186 ]
  %4192 = and <8 x i64> %4189, %4087
  %4193 = fcmp ogt <8 x double> %4074, %4061
  %4194 = select <8 x i1> %4193, <8 x double> %4074, <8 x double> %4061
  %4195 = select <8 x i1> %4190, <8 x double> %4194, <8 x double> zeroinitializer
  %4196 = icmp eq <8 x i64> %4192, zeroinitializer
  %4197 = select <8 x i1> %4196, <8 x double> %4074, <8 x double> %4195
  %4198 = fcmp ogt <8 x double> %4191, splat (double 5.000000e-02)
  %4199 = select <8 x i1> %4198, <8 x double> %4191, <8 x double> splat (double 5.000000e-02)
  %4200 = fcmp olt <8 x double> %4199, splat (double 0x3FEE666666666666)
  %4201 = select <8 x i1> %4200, <8 x double> %4199, <8 x double> splat (double 0x3FEE666666666666)
  %4202 = fmul <8 x double> %4061, %4201
  %4203 = fcmp ogt <8 x double> %4202, splat (double 0x3EB0C6F7A0B5ED8D)
  %4204 = select <8 x i1> %4203, <8 x double> %4202, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4205 = select <8 x i1> %4196, <8 x double> %4083, <8 x double> %4204
  %4206 = fadd <8 x double> %4086, splat (double 1.000000e+00)
  %4207 = select <8 x i1> %4196, <8 x double> %4086, <8 x double> %4206
  %4208 = xor <8 x i64> %4192, %4087
  %4209 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4210 = fmul <8 x double> %4209, splat (double 5.000000e-01)
  %4211 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %4212 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %4213 = fneg <8 x double> %4210
  %4214 = icmp eq <8 x i64> %4212, zeroinitializer
  %4215 = select <8 x i1> %4214, <8 x double> %4213, <8 x double> %4210
  %4216 = fadd <8 x double> %4211, %4215
  %4217 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %4218 = fsub <8 x double> %4217, %4216
  %4219 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %4220 = fsub <8 x double> %4219, %4216
  %4221 = fneg <8 x double> %4218
  %4222 = select <8 x i1> %4214, <8 x double> %4221, <8 x double> %4218
  %4223 = fneg <8 x double> %4220
  %4224 = select <8 x i1> %4214, <8 x double> %4223, <8 x double> %4220
  %4225 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %4226 = fcmp oeq <8 x double> %4225, zeroinitializer
  %4227 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %4228 = fcmp oeq <8 x double> %4227, zeroinitializer
  %4229 = and <8 x i1> %4226, %4228
  %4230 = fcmp olt <8 x double> %4222, splat (double -4.000000e-03)
  %4231 = and <8 x i1> %4229, %4230
  %4232 = fcmp ogt <8 x double> %4224, splat (double 4.000000e-03)
  %4233 = and <8 x i1> %4232, %4231
  %4234 = and <8 x i1> %4062, %4233
  %4235 = fsub <8 x double> %4222, %4224
  %4236 = fdiv <8 x double> %4222, %4235
  %4237 = select <8 x i1> %4234, <8 x i64> %4208, <8 x i64> zeroinitializer
  %4238 = fcmp ogt <8 x double> %4197, %4061
  %4239 = icmp eq <8 x i64> %4237, zeroinitializer
  %4240 = select <8 x i1> %4239, <8 x i1> splat (i1 true), <8 x i1> %4238
  %4241 = select <8 x i1> %4240, <8 x double> %4197, <8 x double> %4061
  store <8 x double> %4241, ptr %181, align 64, !tbaa !26
  %4242 = fcmp ogt <8 x double> %4236, splat (double 5.000000e-02)
  %4243 = select <8 x i1> %4242, <8 x double> %4236, <8 x double> splat (double 5.000000e-02)
  %4244 = fcmp olt <8 x double> %4243, splat (double 0x3FEE666666666666)
  %4245 = select <8 x i1> %4244, <8 x double> %4243, <8 x double> splat (double 0x3FEE666666666666)
  %4246 = fmul <8 x double> %4061, %4245
  %4247 = fcmp ogt <8 x double> %4246, splat (double 0x3EB0C6F7A0B5ED8D)
  %4248 = select <8 x i1> %4247, <8 x double> %4246, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4249 = select <8 x i1> %4239, <8 x double> %4205, <8 x double> %4248
  store <8 x double> %4249, ptr %161, align 64, !tbaa !26
  %4250 = fadd <8 x double> %4207, splat (double 1.000000e+00)
  %4251 = select <8 x i1> %4239, <8 x double> %4207, <8 x double> %4250
  store <8 x double> %4251, ptr %146, align 64, !tbaa !26
  %4252 = xor <8 x i64> %4237, %4208
  %4253 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %4254 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4255 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %4256 = fsub <8 x double> %4254, %4255
  %4257 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4258 = fcmp une <8 x double> %4257, splat (double 1.000000e+00)
  %4259 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %4260 = fsub <8 x double> %4217, %4259
  %4261 = select <8 x i1> %4258, <8 x double> splat (double -1.000000e+00), <8 x double> %4260
  %4262 = fcmp une <8 x double> %4257, splat (double 2.000000e+00)
  %4263 = fsub <8 x double> %4253, %4259
  %4264 = select <8 x i1> %4262, <8 x double> %4261, <8 x double> %4263
  %4265 = fcmp une <8 x double> %4257, splat (double 3.000000e+00)
  %4266 = fsub <8 x double> %4256, %4259
  %4267 = select <8 x i1> %4265, <8 x double> %4264, <8 x double> %4266
  %4268 = fcmp une <8 x double> %4257, splat (double 4.000000e+00)
  %4269 = fsub <8 x double> %4259, %4256
  %4270 = select <8 x i1> %4268, <8 x double> %4267, <8 x double> %4269
  br i1 %4088, label %4271, label %4303

4271:                                             ; preds = %4188
  %4272 = load ptr, ptr %151, align 8, !tbaa !28
  %4273 = and i64 %4042, 1
  %4274 = icmp eq i64 %4042, 1
  br i1 %4274, label %4293, label %4275

4275:                                             ; preds = %4271
  %4276 = and i64 %4042, 9223372036854775806
  br label %4277

4277:                                             ; preds = %4277, %4275
  %4278 = phi i64 [ 0, %4275 ], [ %4290, %4277 ]
  %4279 = phi <8 x double> [ splat (double 1.000000e+09), %4275 ], [ %4289, %4277 ]
  %4280 = phi i64 [ 0, %4275 ], [ %4291, %4277 ]
  %4281 = getelementptr inbounds nuw %struct.Piece, ptr %4272, i64 %4278, i32 35
  %4282 = load <8 x double>, ptr %4281, align 64, !tbaa !26
  %4283 = fcmp olt <8 x double> %4279, %4282
  %4284 = select <8 x i1> %4283, <8 x double> %4279, <8 x double> %4282
  %4285 = or disjoint i64 %4278, 1
  %4286 = getelementptr inbounds nuw %struct.Piece, ptr %4272, i64 %4285, i32 35
  %4287 = load <8 x double>, ptr %4286, align 64, !tbaa !26
  %4288 = fcmp olt <8 x double> %4284, %4287
  %4289 = select <8 x i1> %4288, <8 x double> %4284, <8 x double> %4287
  %4290 = add nuw nsw i64 %4278, 2
  %4291 = add i64 %4280, 2
  %4292 = icmp eq i64 %4291, %4276
  br i1 %4292, label %4293, label %4277, !llvm.loop !139

4293:                                             ; preds = %4277, %4271
  %4294 = phi <8 x double> [ poison, %4271 ], [ %4289, %4277 ]
  %4295 = phi i64 [ 0, %4271 ], [ %4290, %4277 ]
  %4296 = phi <8 x double> [ splat (double 1.000000e+09), %4271 ], [ %4289, %4277 ]
  %4297 = icmp eq i64 %4273, 0
  br i1 %4297, label %4303, label %4298

4298:                                             ; preds = %4293
  %4299 = getelementptr inbounds nuw %struct.Piece, ptr %4272, i64 %4295, i32 35
  %4300 = load <8 x double>, ptr %4299, align 64, !tbaa !26
  %4301 = fcmp olt <8 x double> %4296, %4300
  %4302 = select <8 x i1> %4301, <8 x double> %4296, <8 x double> %4300
  br label %4303

4303:                                             ; preds = %4298, %4293, %4188
  %4304 = phi <8 x double> [ splat (double 1.000000e+09), %4188 ], [ %4294, %4293 ], [ %4302, %4298 ]
  %4305 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %4306 = fsub <8 x double> %4305, %4255
  %4307 = fsub <8 x double> %4219, %4259
  %4308 = select <8 x i1> %4258, <8 x double> splat (double -1.000000e+00), <8 x double> %4307
  %4309 = fsub <8 x double> %4304, %4259
  %4310 = select <8 x i1> %4262, <8 x double> %4308, <8 x double> %4309
  %4311 = fsub <8 x double> %4306, %4259
  %4312 = select <8 x i1> %4265, <8 x double> %4310, <8 x double> %4311
  %4313 = fsub <8 x double> %4259, %4306
  %4314 = select <8 x i1> %4268, <8 x double> %4312, <8 x double> %4313
  %4315 = fcmp une <8 x double> %4257, zeroinitializer
  %4316 = fcmp oge <8 x double> %4061, splat (double 5.000000e-02)
  %4317 = and <8 x i1> %4316, %4315
  %4318 = fcmp olt <8 x double> %4270, zeroinitializer
  %4319 = and <8 x i1> %4317, %4318
  %4320 = fsub <8 x double> %4314, %4270
  %4321 = fmul <8 x double> %4320, splat (double 2.000000e-02)
  %4322 = fcmp ogt <8 x double> %4314, %4321
  %4323 = and <8 x i1> %4319, %4322
  %4324 = fsub <8 x double> %4270, %4314
  %4325 = fdiv <8 x double> %4270, %4324
  %4326 = fcmp olt <8 x double> %4325, splat (double 0x3FEE666666666666)
  %4327 = and <8 x i1> %4326, %4323
  %4328 = select <8 x i1> %4327, <8 x i64> %4252, <8 x i64> zeroinitializer
  %4329 = fcmp ogt <8 x double> %4241, %4061
  %4330 = icmp eq <8 x i64> %4328, zeroinitializer
  %4331 = select <8 x i1> %4330, <8 x i1> splat (i1 true), <8 x i1> %4329
  %4332 = select <8 x i1> %4331, <8 x double> %4241, <8 x double> %4061
  store <8 x double> %4332, ptr %181, align 64, !tbaa !26
  %4333 = fcmp ogt <8 x double> %4325, splat (double 5.000000e-02)
  %4334 = select <8 x i1> %4333, <8 x double> %4325, <8 x double> splat (double 5.000000e-02)
  %4335 = fcmp olt <8 x double> %4334, splat (double 0x3FEE666666666666)
  %4336 = select <8 x i1> %4335, <8 x double> %4334, <8 x double> splat (double 0x3FEE666666666666)
  %4337 = fmul <8 x double> %4061, %4336
  %4338 = fcmp ogt <8 x double> %4337, splat (double 0x3EB0C6F7A0B5ED8D)
  %4339 = select <8 x i1> %4338, <8 x double> %4337, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4340 = select <8 x i1> %4330, <8 x double> %4249, <8 x double> %4339
  store <8 x double> %4340, ptr %161, align 64, !tbaa !26
  %4341 = fadd <8 x double> %4251, splat (double 1.000000e+00)
  %4342 = select <8 x i1> %4330, <8 x double> %4251, <8 x double> %4341
  store <8 x double> %4342, ptr %146, align 64, !tbaa !26
  %4343 = xor <8 x i64> %4328, %4252
  %4344 = or <8 x i64> %4343, %4048
  %4345 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4344)
  %4346 = icmp eq i64 %4345, 0
  br i1 %4346, label %550, label %4403

4347:                                             ; preds = %3995, %4395
  %4348 = phi i64 [ 0, %3995 ], [ %4400, %4395 ]
  %4349 = load ptr, ptr %151, align 8, !tbaa !28
  %4350 = getelementptr inbounds nuw %struct.Piece, ptr %4349, i64 %4348
  %4351 = getelementptr inbounds nuw i8, ptr %4350, i64 8520
  %4352 = load ptr, ptr %4351, align 8, !tbaa !59
  %4353 = load <8 x double>, ptr %4352, align 64, !tbaa !26
  %4354 = getelementptr inbounds nuw i8, ptr %4350, i64 1344
  %4355 = load <8 x double>, ptr %4354, align 64, !tbaa !26
  %4356 = getelementptr inbounds nuw i8, ptr %4352, i64 64
  %4357 = load <8 x double>, ptr %4356, align 64, !tbaa !26
  %4358 = fsub <8 x double> %4357, %4353
  %4359 = fneg <8 x double> %4355
  %4360 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4359, <8 x double> %4358, <8 x double> %4353)
  %4361 = getelementptr inbounds nuw i8, ptr %4350, i64 8512
  %4362 = load i64, ptr %4361, align 64, !tbaa !31
  %4363 = icmp eq i64 %4362, 0
  br i1 %4363, label %4395, label %4364

4364:                                             ; preds = %4347
  %4365 = getelementptr <8 x double>, ptr %4352, i64 %4362
  %4366 = getelementptr i8, ptr %4365, i64 -64
  %4367 = load <8 x double>, ptr %4366, align 64, !tbaa !26
  %4368 = load <8 x double>, ptr %4365, align 64, !tbaa !26
  %4369 = getelementptr inbounds nuw i8, ptr %4350, i64 2880
  %4370 = load <8 x double>, ptr %4369, align 64, !tbaa !26
  %4371 = getelementptr inbounds nuw i8, ptr %4350, i64 2944
  %4372 = load <8 x double>, ptr %4371, align 64, !tbaa !26
  %4373 = getelementptr inbounds nuw i8, ptr %4350, i64 64
  %4374 = load <8 x double>, ptr %4373, align 64, !tbaa !26
  %4375 = fsub <8 x double> %4372, %4374
  %4376 = fmul <8 x double> %4370, %4375
  %4377 = getelementptr inbounds nuw i8, ptr %4350, i64 576
  %4378 = load <8 x double>, ptr %4377, align 64, !tbaa !26
  %4379 = getelementptr inbounds nuw i8, ptr %4350, i64 2816
  %4380 = load <8 x double>, ptr %4379, align 64, !tbaa !26
  %4381 = fdiv <8 x double> %4378, %4380
  %4382 = getelementptr inbounds nuw i8, ptr %4350, i64 192
  %4383 = load <8 x double>, ptr %4382, align 64, !tbaa !26
  %4384 = getelementptr inbounds nuw i8, ptr %4350, i64 256
  %4385 = load <8 x double>, ptr %4384, align 64, !tbaa !26
  %4386 = getelementptr inbounds nuw i8, ptr %4350, i64 320
  %4387 = load <8 x double>, ptr %4386, align 64, !tbaa !26
  %4388 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4368, <8 x double> %4387, <8 x double> %4385)
  %4389 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4368, <8 x double> %4388, <8 x double> %4383)
  %4390 = fdiv <8 x double> %4389, %4376
  %4391 = fmul <8 x double> %4368, %4390
  %4392 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4381, <8 x double> %4367, <8 x double> %4391)
  %4393 = fadd <8 x double> %4381, %4390
  %4394 = fdiv <8 x double> %4392, %4393
  br label %4395

4395:                                             ; preds = %4347, %4364
  %4396 = phi <8 x double> [ %4394, %4364 ], [ %4360, %4347 ]
  %4397 = getelementptr inbounds nuw i8, ptr %4350, i64 7616
  %4398 = load <8 x double>, ptr %4397, align 64, !tbaa !26
  %4399 = select <8 x i1> %3996, <8 x double> %4398, <8 x double> %4396
  store <8 x double> %4399, ptr %4397, align 64, !tbaa !26
  %4400 = add nuw nsw i64 %4348, 1
  %4401 = load i64, ptr %178, align 8, !tbaa !20
  %4402 = icmp slt i64 %4400, %4401
  br i1 %4402, label %4347, label %4041, !llvm.loop !140

4403:                                             ; preds = %4303
  %4404 = icmp eq <8 x i64> %4344, zeroinitializer
  %4405 = select <8 x i1> %4404, <8 x double> %4055, <8 x double> %4054
  store <8 x double> %4405, ptr %232, align 64, !tbaa !26
  %4406 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %4407 = select <8 x i1> %4404, <8 x double> %4406, <8 x double> %4217
  store <8 x double> %4407, ptr %172, align 64, !tbaa !26
  %4408 = select <8 x i1> %4404, <8 x double> %4217, <8 x double> %4219
  store <8 x double> %4408, ptr %166, align 64, !tbaa !26
  %4409 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %4410 = select <8 x i1> %4404, <8 x double> %4409, <8 x double> %4254
  store <8 x double> %4410, ptr %264, align 64, !tbaa !26
  %4411 = select <8 x i1> %4404, <8 x double> %4254, <8 x double> %4305
  store <8 x double> %4411, ptr %265, align 64, !tbaa !26
  %4412 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %4413 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %4414 = select <8 x i1> %4404, <8 x double> %4413, <8 x double> %4412
  store <8 x double> %4414, ptr %266, align 64, !tbaa !26
  %4415 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %4416 = select <8 x i1> %4404, <8 x double> %4412, <8 x double> %4415
  store <8 x double> %4416, ptr %267, align 64, !tbaa !26
  %4417 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %4418 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %4419 = select <8 x i1> %4404, <8 x double> %4418, <8 x double> %4417
  store <8 x double> %4419, ptr %269, align 64, !tbaa !26
  %4420 = load <8 x double>, ptr %271, align 64, !tbaa !26
  %4421 = select <8 x i1> %4404, <8 x double> %4417, <8 x double> %4420
  store <8 x double> %4421, ptr %270, align 64, !tbaa !26
  %4422 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %4423 = load <8 x double>, ptr %272, align 64, !tbaa !26
  %4424 = select <8 x i1> %4404, <8 x double> %4423, <8 x double> %4422
  store <8 x double> %4424, ptr %272, align 64, !tbaa !26
  %4425 = load <8 x double>, ptr %274, align 64, !tbaa !26
  %4426 = select <8 x i1> %4404, <8 x double> %4422, <8 x double> %4425
  store <8 x double> %4426, ptr %273, align 64, !tbaa !26
  %4427 = load <8 x double>, ptr %276, align 64, !tbaa !26
  %4428 = load <8 x double>, ptr %275, align 64, !tbaa !26
  %4429 = select <8 x i1> %4404, <8 x double> %4428, <8 x double> %4427
  store <8 x double> %4429, ptr %275, align 64, !tbaa !26
  %4430 = load <8 x double>, ptr %277, align 64, !tbaa !26
  %4431 = select <8 x i1> %4404, <8 x double> %4427, <8 x double> %4430
  store <8 x double> %4431, ptr %276, align 64, !tbaa !26
  %4432 = xor <8 x i64> %4344, splat (i64 -1)
  br i1 %4088, label %4433, label %4827

4433:                                             ; preds = %4403, %4792
  %4434 = phi i64 [ %4804, %4792 ], [ 0, %4403 ]
  %4435 = load ptr, ptr %151, align 8, !tbaa !28
  %4436 = getelementptr inbounds nuw %struct.Piece, ptr %4435, i64 %4434
  %4437 = getelementptr inbounds nuw i8, ptr %4436, i64 1664
  %4438 = load <8 x double>, ptr %4437, align 64, !tbaa !26
  %4439 = fcmp ogt <8 x double> %4438, zeroinitializer
  %4440 = bitcast <8 x i1> %4439 to i8
  %4441 = icmp eq i8 %4440, 0
  br i1 %4441, label %4699, label %4442

4442:                                             ; preds = %4433
  %4443 = load i64, ptr %141, align 16, !tbaa !21
  %4444 = add i64 %4443, -1
  %4445 = getelementptr inbounds nuw i8, ptr %4436, i64 4672
  %4446 = load <8 x double>, ptr %4445, align 64, !tbaa !26
  %4447 = getelementptr inbounds nuw i8, ptr %4436, i64 3776
  %4448 = load <8 x double>, ptr %4447, align 64, !tbaa !26
  %4449 = getelementptr inbounds nuw i8, ptr %4436, i64 8512
  %4450 = load i64, ptr %4449, align 64, !tbaa !31
  %4451 = icmp sgt i64 %4443, %4450
  br i1 %4451, label %4460, label %4452

4452:                                             ; preds = %4442
  %4453 = getelementptr inbounds nuw i8, ptr %4436, i64 8608
  %4454 = load ptr, ptr %4453, align 32, !tbaa !74
  %4455 = getelementptr inbounds <8 x double>, ptr %4454, i64 %4444
  %4456 = load <8 x double>, ptr %4455, align 64, !tbaa !26
  %4457 = getelementptr inbounds nuw i8, ptr %4436, i64 1536
  %4458 = load <8 x double>, ptr %4457, align 64, !tbaa !26
  %4459 = fmul <8 x double> %4456, %4458
  br label %4469

4460:                                             ; preds = %4442
  %4461 = getelementptr inbounds nuw i8, ptr %4436, i64 1536
  %4462 = load <8 x double>, ptr %4461, align 64, !tbaa !26
  %4463 = getelementptr inbounds nuw i8, ptr %4436, i64 8608
  %4464 = load ptr, ptr %4463, align 32, !tbaa !74
  %4465 = getelementptr inbounds <8 x double>, ptr %4464, i64 %4444
  %4466 = load <8 x double>, ptr %4465, align 64, !tbaa !26
  %4467 = fsub <8 x double> %4446, %4462
  %4468 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4466, <8 x double> %4467, <8 x double> %4462)
  br label %4469

4469:                                             ; preds = %4460, %4452
  %4470 = phi <8 x double> [ %4458, %4452 ], [ %4462, %4460 ]
  %4471 = phi <8 x double> [ %4459, %4452 ], [ %4468, %4460 ]
  %4472 = getelementptr inbounds nuw i8, ptr %4436, i64 3008
  %4473 = load <8 x double>, ptr %4472, align 64, !tbaa !26
  %4474 = fcmp ole <8 x double> %4471, %4473
  %4475 = getelementptr inbounds nuw i8, ptr %4436, i64 7680
  %4476 = load <8 x double>, ptr %4475, align 64, !tbaa !26
  %4477 = fcmp oeq <8 x double> %4476, zeroinitializer
  %4478 = select <8 x i1> %4477, <8 x i1> %4474, <8 x i1> zeroinitializer
  %4479 = select <8 x i1> %4478, <8 x i64> %4344, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %4480 = xor <8 x i64> %4479, %4344
  store <8 x i64> %4480, ptr %12, align 64, !tbaa !26
  %4481 = fsub <8 x double> %4446, %4448
  %4482 = getelementptr inbounds nuw i8, ptr %4436, i64 1536
  %4483 = fsub <8 x double> %4448, %4470
  %4484 = fdiv <8 x double> %4481, %4483
  %4485 = getelementptr inbounds nuw i8, ptr %4436, i64 8552
  %4486 = load ptr, ptr %4485, align 8, !tbaa !69
  %4487 = getelementptr inbounds <8 x double>, ptr %4486, i64 %4450
  %4488 = load <8 x double>, ptr %4487, align 64, !tbaa !26
  %4489 = getelementptr inbounds nuw i8, ptr %4436, i64 8560
  %4490 = load ptr, ptr %4489, align 16, !tbaa !49
  %4491 = getelementptr inbounds <8 x double>, ptr %4490, i64 %4450
  %4492 = load <8 x double>, ptr %4491, align 64, !tbaa !26
  %4493 = icmp eq <8 x i64> %4479, zeroinitializer
  %4494 = select <8 x i1> %4493, <8 x double> %4492, <8 x double> %4488
  store <8 x double> %4494, ptr %4491, align 64, !tbaa !26
  %4495 = load i64, ptr %4449, align 64, !tbaa !31
  %4496 = add nsw i64 %4495, 1
  %4497 = icmp slt i64 %4496, %4444
  br i1 %4497, label %4498, label %4502

4498:                                             ; preds = %4469
  %4499 = getelementptr inbounds nuw i8, ptr %4436, i64 8624
  br label %4542

4500:                                             ; preds = %4542
  %4501 = load i64, ptr %4449, align 64, !tbaa !31
  br label %4502

4502:                                             ; preds = %4500, %4469
  %4503 = phi i64 [ %4495, %4469 ], [ %4501, %4500 ]
  %4504 = phi <8 x double> [ %4488, %4469 ], [ %4547, %4500 ]
  %4505 = icmp sgt i64 %4443, %4503
  br i1 %4505, label %4513, label %4506

4506:                                             ; preds = %4502
  %4507 = getelementptr inbounds nuw i8, ptr %4436, i64 8608
  %4508 = load ptr, ptr %4507, align 32, !tbaa !74
  %4509 = getelementptr inbounds <8 x double>, ptr %4508, i64 %4444
  %4510 = load <8 x double>, ptr %4509, align 64, !tbaa !26
  %4511 = load <8 x double>, ptr %4482, align 64, !tbaa !26
  %4512 = fmul <8 x double> %4510, %4511
  br label %4521

4513:                                             ; preds = %4502
  %4514 = load <8 x double>, ptr %4482, align 64, !tbaa !26
  %4515 = getelementptr inbounds nuw i8, ptr %4436, i64 8608
  %4516 = load ptr, ptr %4515, align 32, !tbaa !74
  %4517 = getelementptr inbounds <8 x double>, ptr %4516, i64 %4444
  %4518 = load <8 x double>, ptr %4517, align 64, !tbaa !26
  %4519 = fsub <8 x double> %4448, %4514
  %4520 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4518, <8 x double> %4519, <8 x double> %4514)
  br label %4521

4521:                                             ; preds = %4513, %4506
  %4522 = phi <8 x double> [ %4512, %4506 ], [ %4520, %4513 ]
  %4523 = load ptr, ptr %4485, align 8, !tbaa !69
  %4524 = getelementptr inbounds <8 x double>, ptr %4523, i64 %4444
  %4525 = load <8 x double>, ptr %4524, align 64, !tbaa !26
  %4526 = load ptr, ptr %4489, align 16, !tbaa !49
  %4527 = getelementptr inbounds <8 x double>, ptr %4526, i64 %4444
  %4528 = fsub <8 x double> %4504, %4525
  %4529 = fsub <8 x double> %4471, %4522
  %4530 = load <8 x double>, ptr %4472, align 64, !tbaa !26
  %4531 = fsub <8 x double> %4530, %4522
  %4532 = fdiv <8 x double> %4529, %4531
  %4533 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4528, <8 x double> %4532, <8 x double> %4525)
  %4534 = load <8 x double>, ptr %4527, align 64, !tbaa !26
  %4535 = select <8 x i1> %4493, <8 x double> %4534, <8 x double> %4533
  store <8 x double> %4535, ptr %4527, align 64, !tbaa !26
  %4536 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4480)
  %4537 = icmp eq i64 %4536, 0
  br i1 %4537, label %4698, label %4538

4538:                                             ; preds = %4521
  %4539 = getelementptr inbounds nuw i8, ptr %4436, i64 8608
  %4540 = getelementptr inbounds nuw i8, ptr %4436, i64 3136
  %4541 = getelementptr inbounds nuw i8, ptr %4436, i64 832
  br label %4560

4542:                                             ; preds = %4498, %4542
  %4543 = phi i64 [ %4496, %4498 ], [ %4558, %4542 ]
  %4544 = phi <8 x double> [ %4488, %4498 ], [ %4547, %4542 ]
  %4545 = load ptr, ptr %4485, align 8, !tbaa !69
  %4546 = getelementptr inbounds <8 x double>, ptr %4545, i64 %4543
  %4547 = load <8 x double>, ptr %4546, align 64, !tbaa !26
  %4548 = load ptr, ptr %4489, align 16, !tbaa !49
  %4549 = getelementptr inbounds <8 x double>, ptr %4548, i64 %4543
  %4550 = fsub <8 x double> %4544, %4547
  %4551 = load ptr, ptr %4499, align 16, !tbaa !141
  %4552 = getelementptr inbounds <8 x double>, ptr %4551, i64 %4543
  %4553 = load <8 x double>, ptr %4552, align 64, !tbaa !26
  %4554 = fmul <8 x double> %4484, %4553
  %4555 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4550, <8 x double> %4554, <8 x double> %4547)
  %4556 = load <8 x double>, ptr %4549, align 64, !tbaa !26
  %4557 = select <8 x i1> %4493, <8 x double> %4556, <8 x double> %4555
  store <8 x double> %4557, ptr %4549, align 64, !tbaa !26
  %4558 = add nsw i64 %4543, 1
  %4559 = icmp eq i64 %4558, %4444
  br i1 %4559, label %4500, label %4542, !llvm.loop !142

4560:                                             ; preds = %4538, %4695
  %4561 = phi i64 [ 0, %4538 ], [ %4696, %4695 ]
  %4562 = getelementptr inbounds nuw i64, ptr %12, i64 %4561
  %4563 = load i64, ptr %4562, align 8, !tbaa !30
  %4564 = icmp eq i64 %4563, 0
  br i1 %4564, label %4695, label %4565

4565:                                             ; preds = %4560
  %4566 = load i64, ptr %141, align 16, !tbaa !21
  %4567 = load i64, ptr %4449, align 64, !tbaa !31
  %4568 = getelementptr inbounds nuw double, ptr %4482, i64 %4561
  %4569 = load double, ptr %4568, align 8, !tbaa !44
  %4570 = getelementptr inbounds nuw double, ptr %4472, i64 %4561
  %4571 = load double, ptr %4570, align 8, !tbaa !44
  %4572 = add nsw i64 %4566, -1
  %4573 = icmp sgt i64 %4566, %4567
  br i1 %4573, label %4574, label %4695

4574:                                             ; preds = %4565
  %4575 = getelementptr inbounds nuw double, ptr %4447, i64 %4561
  %4576 = load double, ptr %4575, align 8, !tbaa !44
  %4577 = getelementptr inbounds nuw double, ptr %4445, i64 %4561
  %4578 = load double, ptr %4577, align 8, !tbaa !44
  %4579 = load ptr, ptr %4539, align 32
  %4580 = getelementptr i8, ptr %4579, i64 64
  %4581 = getelementptr double, ptr %4580, i64 %4561
  %4582 = fsub double %4576, %4569
  %4583 = getelementptr double, ptr %4579, i64 %4561
  %4584 = fsub double %4578, %4569
  %4585 = load ptr, ptr %4485, align 8, !tbaa !69
  %4586 = getelementptr double, ptr %4585, i64 %4561
  %4587 = load ptr, ptr %4489, align 16, !tbaa !49
  %4588 = getelementptr double, ptr %4587, i64 %4561
  %4589 = getelementptr <8 x double>, ptr %4583, i64 %4572
  br label %4617

4590:                                             ; preds = %4663
  %4591 = getelementptr inbounds nuw double, ptr %4475, i64 %4561
  %4592 = load double, ptr %4591, align 8, !tbaa !44
  %4593 = fcmp ogt double %4592, 0.000000e+00
  %4594 = fcmp ogt double %4674, 0.000000e+00
  %4595 = select i1 %4593, i1 %4594, i1 false
  br i1 %4595, label %4596, label %4695

4596:                                             ; preds = %4590
  %4597 = getelementptr inbounds nuw double, ptr %4540, i64 %4561
  %4598 = getelementptr inbounds nuw double, ptr %4541, i64 %4561
  %4599 = sub i64 %4566, %4567
  %4600 = add i64 %4567, 1
  %4601 = and i64 %4599, 1
  %4602 = icmp eq i64 %4601, 0
  br i1 %4602, label %4612, label %4603

4603:                                             ; preds = %4596
  %4604 = load double, ptr %4597, align 8, !tbaa !44
  %4605 = load double, ptr %4598, align 8, !tbaa !44
  %4606 = fmul double %4674, %4605
  %4607 = fdiv double %4604, %4606
  %4608 = getelementptr <8 x double>, ptr %4588, i64 %4567
  %4609 = load double, ptr %4608, align 8, !tbaa !44
  %4610 = fmul double %4609, %4607
  store double %4610, ptr %4608, align 8, !tbaa !44
  %4611 = add nsw i64 %4567, 1
  br label %4612

4612:                                             ; preds = %4603, %4596
  %4613 = phi i64 [ %4567, %4596 ], [ %4611, %4603 ]
  %4614 = icmp eq i64 %4566, %4600
  br i1 %4614, label %4695, label %4615

4615:                                             ; preds = %4612
  %4616 = getelementptr i8, ptr %4588, i64 64
  br label %4677

4617:                                             ; preds = %4663, %4574
  %4618 = phi double [ 0.000000e+00, %4574 ], [ %4674, %4663 ]
  %4619 = phi i64 [ %4572, %4574 ], [ %4675, %4663 ]
  %4620 = icmp eq i64 %4619, %4572
  br i1 %4620, label %4621, label %4624

4621:                                             ; preds = %4617
  %4622 = load double, ptr %4589, align 8, !tbaa !44
  %4623 = tail call noundef double @llvm.fmuladd.f64(double %4622, double %4582, double %4569)
  br label %4635

4624:                                             ; preds = %4617
  %4625 = getelementptr <8 x double>, ptr %4581, i64 %4619
  %4626 = load double, ptr %4625, align 8, !tbaa !44
  %4627 = tail call noundef double @llvm.fmuladd.f64(double %4626, double %4582, double %4569)
  %4628 = getelementptr <8 x double>, ptr %4583, i64 %4619
  %4629 = load double, ptr %4628, align 8, !tbaa !44
  %4630 = tail call noundef double @llvm.fmuladd.f64(double %4629, double %4582, double %4569)
  %4631 = tail call noundef double @llvm.fmuladd.f64(double %4626, double %4584, double %4569)
  %4632 = fcmp ult double %4631, %4627
  br i1 %4632, label %4633, label %4635

4633:                                             ; preds = %4624
  %4634 = add nsw i64 %4619, 1
  br label %4635

4635:                                             ; preds = %4633, %4624, %4621
  %4636 = phi double [ %4630, %4633 ], [ %4630, %4624 ], [ %4623, %4621 ]
  %4637 = phi double [ %4627, %4633 ], [ %4627, %4624 ], [ %4571, %4621 ]
  %4638 = phi i64 [ %4634, %4633 ], [ %4619, %4624 ], [ %4572, %4621 ]
  %4639 = icmp sgt i64 %4638, %4567
  br i1 %4639, label %4640, label %4663

4640:                                             ; preds = %4635
  %4641 = load ptr, ptr %4485, align 8
  %4642 = getelementptr double, ptr %4641, i64 %4561
  br label %4643

4643:                                             ; preds = %4658, %4640
  %4644 = phi i64 [ %4638, %4640 ], [ %4661, %4658 ]
  %4645 = phi double [ 0.000000e+00, %4640 ], [ %4660, %4658 ]
  %4646 = phi double [ %4637, %4640 ], [ %4659, %4658 ]
  %4647 = getelementptr <8 x double>, ptr %4583, i64 %4644
  %4648 = load double, ptr %4647, align 8, !tbaa !44
  %4649 = tail call noundef double @llvm.fmuladd.f64(double %4648, double %4584, double %4569)
  %4650 = fcmp ogt double %4649, %4636
  br i1 %4650, label %4651, label %4663

4651:                                             ; preds = %4643
  %4652 = fcmp ogt double %4646, %4649
  br i1 %4652, label %4653, label %4658

4653:                                             ; preds = %4651
  %4654 = getelementptr <8 x double>, ptr %4642, i64 %4644
  %4655 = load double, ptr %4654, align 8, !tbaa !44
  %4656 = fsub double %4646, %4649
  %4657 = tail call double @llvm.fmuladd.f64(double %4655, double %4656, double %4645)
  br label %4658

4658:                                             ; preds = %4653, %4651
  %4659 = phi double [ %4649, %4653 ], [ %4646, %4651 ]
  %4660 = phi double [ %4657, %4653 ], [ %4645, %4651 ]
  %4661 = add nsw i64 %4644, -1
  %4662 = icmp sgt i64 %4661, %4567
  br i1 %4662, label %4643, label %4663, !llvm.loop !143

4663:                                             ; preds = %4658, %4643, %4635
  %4664 = phi double [ %4637, %4635 ], [ %4646, %4643 ], [ %4659, %4658 ]
  %4665 = phi double [ 0.000000e+00, %4635 ], [ %4645, %4643 ], [ %4660, %4658 ]
  %4666 = phi i64 [ %4638, %4635 ], [ %4644, %4643 ], [ %4567, %4658 ]
  %4667 = getelementptr <8 x double>, ptr %4586, i64 %4666
  %4668 = load double, ptr %4667, align 8, !tbaa !44
  %4669 = fsub double %4664, %4636
  %4670 = tail call double @llvm.fmuladd.f64(double %4668, double %4669, double %4665)
  %4671 = fsub double %4637, %4636
  %4672 = fdiv double %4670, %4671
  %4673 = getelementptr <8 x double>, ptr %4588, i64 %4619
  store double %4672, ptr %4673, align 8, !tbaa !44
  %4674 = fadd double %4618, %4670
  %4675 = add nsw i64 %4619, -1
  %4676 = icmp sgt i64 %4619, %4567
  br i1 %4676, label %4617, label %4590, !llvm.loop !144

4677:                                             ; preds = %4677, %4615
  %4678 = phi i64 [ %4613, %4615 ], [ %4693, %4677 ]
  %4679 = load double, ptr %4597, align 8, !tbaa !44
  %4680 = load double, ptr %4598, align 8, !tbaa !44
  %4681 = fmul double %4674, %4680
  %4682 = fdiv double %4679, %4681
  %4683 = getelementptr <8 x double>, ptr %4588, i64 %4678
  %4684 = load double, ptr %4683, align 8, !tbaa !44
  %4685 = fmul double %4684, %4682
  store double %4685, ptr %4683, align 8, !tbaa !44
  %4686 = load double, ptr %4597, align 8, !tbaa !44
  %4687 = load double, ptr %4598, align 8, !tbaa !44
  %4688 = fmul double %4674, %4687
  %4689 = fdiv double %4686, %4688
  %4690 = getelementptr <8 x double>, ptr %4616, i64 %4678
  %4691 = load double, ptr %4690, align 8, !tbaa !44
  %4692 = fmul double %4691, %4689
  store double %4692, ptr %4690, align 8, !tbaa !44
  %4693 = add nsw i64 %4678, 2
  %4694 = icmp eq i64 %4693, %4566
  br i1 %4694, label %4695, label %4677, !llvm.loop !145

4695:                                             ; preds = %4612, %4677, %4590, %4565, %4560
  %4696 = add nuw nsw i64 %4561, 1
  %4697 = icmp eq i64 %4696, 8
  br i1 %4697, label %4698, label %4560, !llvm.loop !146

4698:                                             ; preds = %4695, %4521
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  br label %4699

4699:                                             ; preds = %4433, %4698
  %4700 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %4701 = and <8 x i64> %4700, %4432
  %4702 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4701)
  %4703 = icmp eq i64 %4702, 0
  %4704 = getelementptr inbounds nuw i8, ptr %4436, i64 8520
  br i1 %4703, label %4705, label %4723

4705:                                             ; preds = %4699
  %4706 = getelementptr inbounds nuw i8, ptr %4436, i64 8528
  %4707 = getelementptr inbounds nuw i8, ptr %4436, i64 8536
  %4708 = load ptr, ptr %4707, align 8, !tbaa !35
  %4709 = load ptr, ptr %4706, align 8, !tbaa !35
  store ptr %4709, ptr %4707, align 8, !tbaa !35
  %4710 = load ptr, ptr %4704, align 8, !tbaa !35
  store ptr %4710, ptr %4706, align 8, !tbaa !35
  store ptr %4708, ptr %4704, align 8, !tbaa !35
  %4711 = getelementptr inbounds nuw i8, ptr %4436, i64 8640
  %4712 = getelementptr inbounds nuw i8, ptr %4436, i64 8648
  %4713 = getelementptr inbounds nuw i8, ptr %4436, i64 8656
  %4714 = load ptr, ptr %4713, align 8, !tbaa !35
  %4715 = load ptr, ptr %4712, align 8, !tbaa !35
  store ptr %4715, ptr %4713, align 8, !tbaa !35
  %4716 = load ptr, ptr %4711, align 8, !tbaa !35
  store ptr %4716, ptr %4712, align 8, !tbaa !35
  store ptr %4714, ptr %4711, align 8, !tbaa !35
  %4717 = getelementptr inbounds nuw i8, ptr %4436, i64 8688
  %4718 = getelementptr inbounds nuw i8, ptr %4436, i64 8696
  %4719 = getelementptr inbounds nuw i8, ptr %4436, i64 8704
  %4720 = load ptr, ptr %4719, align 8, !tbaa !35
  %4721 = load ptr, ptr %4718, align 8, !tbaa !35
  store ptr %4721, ptr %4719, align 8, !tbaa !35
  %4722 = load ptr, ptr %4717, align 8, !tbaa !35
  store ptr %4722, ptr %4718, align 8, !tbaa !35
  store ptr %4720, ptr %4717, align 8, !tbaa !35
  br label %4788

4723:                                             ; preds = %4699
  %4724 = load ptr, ptr %4704, align 8, !tbaa !59
  %4725 = getelementptr inbounds nuw i8, ptr %4436, i64 8528
  %4726 = load ptr, ptr %4725, align 16, !tbaa !48
  %4727 = getelementptr inbounds nuw i8, ptr %4436, i64 8536
  %4728 = load ptr, ptr %4727, align 8, !tbaa !58
  %4729 = load i64, ptr %141, align 16, !tbaa !21
  %4730 = icmp sgt i64 %4729, 0
  br i1 %4730, label %4731, label %4744

4731:                                             ; preds = %4723, %4731
  %4732 = phi i64 [ %4742, %4731 ], [ 0, %4723 ]
  %4733 = getelementptr inbounds nuw <8 x double>, ptr %4728, i64 %4732
  %4734 = getelementptr inbounds nuw <8 x double>, ptr %4726, i64 %4732
  %4735 = load <8 x double>, ptr %4734, align 64, !tbaa !26
  %4736 = load <8 x double>, ptr %4733, align 64, !tbaa !26
  %4737 = select <8 x i1> %4404, <8 x double> %4736, <8 x double> %4735
  store <8 x double> %4737, ptr %4733, align 64, !tbaa !26
  %4738 = getelementptr inbounds nuw <8 x double>, ptr %4724, i64 %4732
  %4739 = load <8 x double>, ptr %4738, align 64, !tbaa !26
  %4740 = load <8 x double>, ptr %4734, align 64, !tbaa !26
  %4741 = select <8 x i1> %4404, <8 x double> %4740, <8 x double> %4739
  store <8 x double> %4741, ptr %4734, align 64, !tbaa !26
  %4742 = add nuw nsw i64 %4732, 1
  %4743 = icmp eq i64 %4742, %4729
  br i1 %4743, label %4744, label %4731, !llvm.loop !147

4744:                                             ; preds = %4731, %4723
  %4745 = getelementptr inbounds nuw i8, ptr %4436, i64 8640
  %4746 = load ptr, ptr %4745, align 64, !tbaa !129
  %4747 = getelementptr inbounds nuw i8, ptr %4436, i64 8648
  %4748 = load ptr, ptr %4747, align 8, !tbaa !52
  %4749 = getelementptr inbounds nuw i8, ptr %4436, i64 8656
  %4750 = load ptr, ptr %4749, align 16, !tbaa !63
  %4751 = load i64, ptr %142, align 8, !tbaa !22
  %4752 = icmp sgt i64 %4751, 0
  br i1 %4752, label %4753, label %4788

4753:                                             ; preds = %4744, %4753
  %4754 = phi i64 [ %4764, %4753 ], [ 0, %4744 ]
  %4755 = getelementptr inbounds nuw <8 x double>, ptr %4750, i64 %4754
  %4756 = getelementptr inbounds nuw <8 x double>, ptr %4748, i64 %4754
  %4757 = load <8 x double>, ptr %4756, align 64, !tbaa !26
  %4758 = load <8 x double>, ptr %4755, align 64, !tbaa !26
  %4759 = select <8 x i1> %4404, <8 x double> %4758, <8 x double> %4757
  store <8 x double> %4759, ptr %4755, align 64, !tbaa !26
  %4760 = getelementptr inbounds nuw <8 x double>, ptr %4746, i64 %4754
  %4761 = load <8 x double>, ptr %4760, align 64, !tbaa !26
  %4762 = load <8 x double>, ptr %4756, align 64, !tbaa !26
  %4763 = select <8 x i1> %4404, <8 x double> %4762, <8 x double> %4761
  store <8 x double> %4763, ptr %4756, align 64, !tbaa !26
  %4764 = add nuw nsw i64 %4754, 1
  %4765 = icmp eq i64 %4764, %4751
  br i1 %4765, label %4766, label %4753, !llvm.loop !147

4766:                                             ; preds = %4753
  %4767 = load i64, ptr %142, align 8, !tbaa !22
  %4768 = getelementptr inbounds nuw i8, ptr %4436, i64 8688
  %4769 = load ptr, ptr %4768, align 16, !tbaa !92
  %4770 = getelementptr inbounds nuw i8, ptr %4436, i64 8696
  %4771 = load ptr, ptr %4770, align 8, !tbaa !51
  %4772 = getelementptr inbounds nuw i8, ptr %4436, i64 8704
  %4773 = load ptr, ptr %4772, align 64, !tbaa !61
  %4774 = icmp sgt i64 %4767, 0
  br i1 %4774, label %4775, label %4788

4775:                                             ; preds = %4766, %4775
  %4776 = phi i64 [ %4786, %4775 ], [ 0, %4766 ]
  %4777 = getelementptr inbounds nuw <8 x double>, ptr %4773, i64 %4776
  %4778 = getelementptr inbounds nuw <8 x double>, ptr %4771, i64 %4776
  %4779 = load <8 x double>, ptr %4778, align 64, !tbaa !26
  %4780 = load <8 x double>, ptr %4777, align 64, !tbaa !26
  %4781 = select <8 x i1> %4404, <8 x double> %4780, <8 x double> %4779
  store <8 x double> %4781, ptr %4777, align 64, !tbaa !26
  %4782 = getelementptr inbounds nuw <8 x double>, ptr %4769, i64 %4776
  %4783 = load <8 x double>, ptr %4782, align 64, !tbaa !26
  %4784 = load <8 x double>, ptr %4778, align 64, !tbaa !26
  %4785 = select <8 x i1> %4404, <8 x double> %4784, <8 x double> %4783
  store <8 x double> %4785, ptr %4778, align 64, !tbaa !26
  %4786 = add nuw nsw i64 %4776, 1
  %4787 = icmp eq i64 %4786, %4767
  br i1 %4787, label %4788, label %4775, !llvm.loop !147

4788:                                             ; preds = %4775, %4744, %4766, %4705
  %4789 = getelementptr inbounds nuw i8, ptr %4436, i64 4736
  %4790 = getelementptr inbounds nuw i8, ptr %4436, i64 3840
  %4791 = getelementptr inbounds nuw i8, ptr %4436, i64 2944
  br label %4807

4792:                                             ; preds = %4807
  %4793 = getelementptr inbounds nuw i8, ptr %4436, i64 8384
  %4794 = getelementptr inbounds nuw i8, ptr %4436, i64 6080
  %4795 = load <8 x double>, ptr %4794, align 64, !tbaa !26
  %4796 = fcmp ogt <8 x double> %4795, zeroinitializer
  %4797 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4798 = fcmp une <8 x double> %4797, splat (double 2.000000e+00)
  %4799 = and <8 x i1> %4796, %4798
  %4800 = select <8 x i1> %4799, <8 x i64> %4344, <8 x i64> zeroinitializer
  %4801 = load <8 x i64>, ptr %4793, align 64, !tbaa !26
  %4802 = and <8 x i64> %4801, %4432
  %4803 = or <8 x i64> %4800, %4802
  store <8 x i64> %4803, ptr %4793, align 64, !tbaa !26
  %4804 = add nuw nsw i64 %4434, 1
  %4805 = load i64, ptr %178, align 8, !tbaa !20
  %4806 = icmp slt i64 %4804, %4805
  br i1 %4806, label %4433, label %4819, !llvm.loop !148

4807:                                             ; preds = %4788, %4807
  %4808 = phi i64 [ 0, %4788 ], [ %4817, %4807 ]
  %4809 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4789, i64 0, i64 %4808
  %4810 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4790, i64 0, i64 %4808
  %4811 = load <8 x double>, ptr %4810, align 64, !tbaa !26
  %4812 = load <8 x double>, ptr %4809, align 64, !tbaa !26
  %4813 = select <8 x i1> %4404, <8 x double> %4812, <8 x double> %4811
  store <8 x double> %4813, ptr %4809, align 64, !tbaa !26
  %4814 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4791, i64 0, i64 %4808
  %4815 = load <8 x double>, ptr %4814, align 64, !tbaa !26
  %4816 = select <8 x i1> %4404, <8 x double> %4811, <8 x double> %4815
  store <8 x double> %4816, ptr %4810, align 64, !tbaa !26
  %4817 = add nuw nsw i64 %4808, 1
  %4818 = icmp eq i64 %4817, 14
  br i1 %4818, label %4792, label %4807, !llvm.loop !149

4819:                                             ; preds = %4792
  %4820 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4821 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4822 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4823 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4824 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4825 = fdiv <8 x double> %4822, %4057
  %4826 = icmp sgt i64 %4805, 0
  br label %4827

4827:                                             ; preds = %4403, %4819
  %4828 = phi <8 x double> [ %4825, %4819 ], [ %4067, %4403 ]
  %4829 = phi i1 [ %4826, %4819 ], [ false, %4403 ]
  %4830 = phi <8 x double> [ %4824, %4819 ], [ %4046, %4403 ]
  %4831 = phi <8 x double> [ %4823, %4819 ], [ %4332, %4403 ]
  %4832 = phi <8 x double> [ %4821, %4819 ], [ %4063, %4403 ]
  %4833 = phi <8 x double> [ %4820, %4819 ], [ %4061, %4403 ]
  %4834 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4835 = fadd <8 x double> %4834, %4833
  %4836 = select <8 x i1> %4404, <8 x double> %4834, <8 x double> %4835
  store <8 x double> %4836, ptr %158, align 64, !tbaa !26
  %4837 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4838 = select <8 x i1> %4404, <8 x double> %4837, <8 x double> %4833
  store <8 x double> %4838, ptr %173, align 64, !tbaa !26
  %4839 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4840 = fadd <8 x double> %4839, splat (double 1.000000e+00)
  %4841 = select <8 x i1> %4404, <8 x double> %4839, <8 x double> %4840
  store <8 x double> %4841, ptr %145, align 64, !tbaa !26
  %4842 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4843 = fcmp olt <8 x double> %4842, %4833
  %4844 = select <8 x i1> %4404, <8 x i1> splat (i1 true), <8 x i1> %4843
  %4845 = select <8 x i1> %4844, <8 x double> %4842, <8 x double> %4833
  store <8 x double> %4845, ptr %147, align 64, !tbaa !26
  %4846 = fcmp une <8 x double> %4832, zeroinitializer
  %4847 = fcmp ueq <8 x double> %4056, zeroinitializer
  %4848 = or <8 x i1> %4847, %4846
  %4849 = fcmp olt <8 x double> %4828, splat (double 1.800000e+00)
  %4850 = select <8 x i1> %4849, <8 x double> %4828, <8 x double> splat (double 1.800000e+00)
  %4851 = select <8 x i1> %4848, <8 x double> splat (double 1.800000e+00), <8 x double> %4850
  %4852 = fcmp ogt <8 x double> %4851, splat (double 2.000000e-01)
  %4853 = select <8 x i1> %4852, <8 x double> %4851, <8 x double> splat (double 2.000000e-01)
  %4854 = fmul <8 x double> %4833, %4853
  %4855 = fmul <8 x double> %4833, splat (double 4.000000e+00)
  %4856 = fcmp olt <8 x double> %4831, %4855
  %4857 = select <8 x i1> %4856, <8 x double> %4831, <8 x double> %4855
  %4858 = fcmp ogt <8 x double> %4854, %4857
  %4859 = select <8 x i1> %4858, <8 x double> %4854, <8 x double> %4857
  %4860 = select <8 x i1> %4404, <8 x double> %4831, <8 x double> zeroinitializer
  store <8 x double> %4860, ptr %181, align 64, !tbaa !26
  %4861 = select <8 x i1> %4404, <8 x double> %4830, <8 x double> zeroinitializer
  store <8 x double> %4861, ptr %183, align 64, !tbaa !26
  %4862 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %4863 = and <8 x i64> %4862, %4432
  store <8 x i64> %4863, ptr %174, align 64, !tbaa !26
  %4864 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %4865 = and <8 x i64> %4864, %4432
  store <8 x i64> %4865, ptr %175, align 64, !tbaa !26
  %4866 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %4867 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %4868 = select <8 x i1> %4404, <8 x double> %4867, <8 x double> %4866
  store <8 x double> %4868, ptr %168, align 64, !tbaa !26
  br i1 %4829, label %4869, label %5334

4869:                                             ; preds = %4827, %5327
  %4870 = phi i64 [ %5329, %5327 ], [ 0, %4827 ]
  %4871 = phi <8 x double> [ %5328, %5327 ], [ %4859, %4827 ]
  %4872 = load ptr, ptr %151, align 8, !tbaa !28
  %4873 = getelementptr inbounds nuw %struct.Piece, ptr %4872, i64 %4870
  %4874 = getelementptr inbounds nuw i8, ptr %4873, i64 3904
  %4875 = load <8 x double>, ptr %4874, align 64, !tbaa !26
  %4876 = getelementptr inbounds nuw i8, ptr %4873, i64 1472
  %4877 = load <8 x double>, ptr %4876, align 64, !tbaa !26
  %4878 = fmul <8 x double> %4877, splat (double 1.001000e+00)
  %4879 = fcmp ole <8 x double> %4875, %4878
  %4880 = getelementptr inbounds nuw i8, ptr %4873, i64 1600
  %4881 = load <8 x double>, ptr %4880, align 64, !tbaa !26
  %4882 = getelementptr inbounds nuw i8, ptr %4873, i64 4160
  %4883 = load <8 x double>, ptr %4882, align 64, !tbaa !26
  %4884 = fsub <8 x double> %4881, %4883
  %4885 = fmul <8 x double> %4881, splat (double 1.000000e-04)
  %4886 = fcmp ole <8 x double> %4884, %4885
  %4887 = getelementptr inbounds nuw i8, ptr %4873, i64 8320
  %4888 = load <8 x i64>, ptr %4887, align 64, !tbaa !26
  %4889 = and <8 x i64> %4888, %4344
  %4890 = getelementptr inbounds nuw i8, ptr %4873, i64 7680
  %4891 = load <8 x double>, ptr %4890, align 64, !tbaa !26
  %4892 = fcmp oeq <8 x double> %4891, zeroinitializer
  %4893 = and <8 x i1> %4879, %4892
  %4894 = fcmp oeq <8 x double> %4891, splat (double 1.000000e+00)
  %4895 = and <8 x i1> %4886, %4894
  %4896 = or <8 x i1> %4893, %4895
  %4897 = select <8 x i1> %4896, <8 x i64> %4889, <8 x i64> zeroinitializer
  %4898 = fadd <8 x double> %4891, splat (double 1.000000e+00)
  %4899 = icmp eq <8 x i64> %4897, zeroinitializer
  %4900 = select <8 x i1> %4899, <8 x double> %4891, <8 x double> %4898
  store <8 x double> %4900, ptr %4890, align 64, !tbaa !26
  %4901 = getelementptr inbounds nuw i8, ptr %4873, i64 8384
  %4902 = load <8 x i64>, ptr %4901, align 64, !tbaa !26
  %4903 = or <8 x i64> %4897, %4902
  store <8 x i64> %4903, ptr %4901, align 64, !tbaa !26
  %4904 = getelementptr inbounds nuw i8, ptr %4873, i64 896
  %4905 = load <8 x double>, ptr %4904, align 64, !tbaa !26
  %4906 = getelementptr inbounds nuw i8, ptr %4873, i64 6016
  %4907 = load <8 x double>, ptr %4906, align 64, !tbaa !26
  %4908 = getelementptr inbounds nuw i8, ptr %4873, i64 6080
  %4909 = load <8 x double>, ptr %4908, align 64, !tbaa !26
  %4910 = fadd <8 x double> %4907, %4909
  %4911 = fcmp ogt <8 x double> %4910, zeroinitializer
  %4912 = xor <8 x i64> %4888, splat (i64 -1)
  %4913 = and <8 x i64> %4344, %4912
  %4914 = fcmp une <8 x double> %4905, zeroinitializer
  %4915 = or <8 x i1> %4914, %4911
  %4916 = getelementptr inbounds nuw i8, ptr %4873, i64 3968
  %4917 = load <8 x double>, ptr %4916, align 64, !tbaa !26
  %4918 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4919 = fmul <8 x double> %4905, %4918
  %4920 = fcmp ogt <8 x double> %4919, splat (double 0x3E7AD7F29ABCAF48)
  %4921 = select <8 x i1> %4920, <8 x double> %4919, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4922 = fcmp ole <8 x double> %4917, %4921
  %4923 = select <8 x i1> %4922, <8 x i1> %4915, <8 x i1> zeroinitializer
  %4924 = select <8 x i1> %4923, <8 x i64> %4913, <8 x i64> zeroinitializer
  %4925 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4924)
  %4926 = icmp eq i64 %4925, 0
  br i1 %4926, label %5327, label %4927

4927:                                             ; preds = %4869
  %4928 = load i64, ptr %141, align 16, !tbaa !21
  %4929 = load i64, ptr %142, align 8, !tbaa !22
  %4930 = getelementptr inbounds nuw i8, ptr %4873, i64 3840
  %4931 = getelementptr inbounds nuw i8, ptr %4873, i64 4672
  %4932 = load <8 x double>, ptr %4931, align 64, !tbaa !26
  %4933 = getelementptr inbounds nuw i8, ptr %4873, i64 5952
  %4934 = load <8 x double>, ptr %4933, align 64, !tbaa !26
  %4935 = getelementptr inbounds nuw i8, ptr %4873, i64 832
  %4936 = load <8 x double>, ptr %4935, align 64, !tbaa !26
  %4937 = getelementptr inbounds nuw i8, ptr %4873, i64 8560
  %4938 = load ptr, ptr %4937, align 16, !tbaa !49
  %4939 = add nsw i64 %4928, -1
  %4940 = getelementptr inbounds <8 x double>, ptr %4938, i64 %4939
  %4941 = load <8 x double>, ptr %4940, align 64, !tbaa !26
  %4942 = fmul <8 x double> %4936, %4941
  %4943 = fneg <8 x double> %4917
  %4944 = fdiv <8 x double> %4943, %4942
  %4945 = fcmp ogt <8 x double> %4944, splat (double 0x3E7AD7F29ABCAF48)
  %4946 = select <8 x i1> %4945, <8 x double> %4944, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4947 = load <8 x double>, ptr %4873, align 64, !tbaa !26
  %4948 = fsub <8 x double> %4947, %4946
  %4949 = getelementptr inbounds nuw i8, ptr %4873, i64 2560
  %4950 = load <8 x double>, ptr %4949, align 64, !tbaa !26
  %4951 = getelementptr inbounds nuw i8, ptr %4873, i64 2624
  %4952 = load <8 x double>, ptr %4951, align 64, !tbaa !26
  %4953 = getelementptr inbounds nuw i8, ptr %4873, i64 2688
  %4954 = load <8 x double>, ptr %4953, align 64, !tbaa !26
  %4955 = getelementptr inbounds nuw i8, ptr %4873, i64 2752
  %4956 = load <8 x double>, ptr %4955, align 64, !tbaa !26
  %4957 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4948, <8 x double> %4956, <8 x double> %4954)
  %4958 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4948, <8 x double> %4957, <8 x double> %4952)
  %4959 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4948, <8 x double> %4958, <8 x double> %4950)
  %4960 = fsub <8 x double> %4932, %4959
  %4961 = getelementptr inbounds nuw i8, ptr %4873, i64 8528
  %4962 = load ptr, ptr %4961, align 16, !tbaa !48
  %4963 = getelementptr inbounds <8 x double>, ptr %4962, i64 %4939
  %4964 = load <8 x double>, ptr %4963, align 64, !tbaa !26
  %4965 = getelementptr inbounds nuw i8, ptr %4873, i64 8512
  %4966 = load i64, ptr %4965, align 64, !tbaa !31
  %4967 = icmp sgt i64 %4928, %4966
  br i1 %4967, label %4976, label %4968

4968:                                             ; preds = %4927
  %4969 = getelementptr inbounds nuw i8, ptr %4873, i64 640
  %4970 = load <8 x double>, ptr %4969, align 64, !tbaa !26
  %4971 = getelementptr inbounds nuw i8, ptr %4873, i64 8536
  %4972 = load ptr, ptr %4971, align 8, !tbaa !58
  %4973 = getelementptr inbounds <8 x double>, ptr %4972, i64 %4939
  %4974 = load <8 x double>, ptr %4973, align 64, !tbaa !26
  %4975 = fmul <8 x double> %4974, %4970
  br label %4996

4976:                                             ; preds = %4927
  %4977 = getelementptr inbounds nuw i8, ptr %4873, i64 384
  %4978 = load <8 x double>, ptr %4977, align 64, !tbaa !26
  %4979 = getelementptr inbounds nuw i8, ptr %4873, i64 448
  %4980 = load <8 x double>, ptr %4979, align 64, !tbaa !26
  %4981 = getelementptr inbounds nuw i8, ptr %4873, i64 512
  %4982 = load <8 x double>, ptr %4981, align 64, !tbaa !26
  %4983 = fmul <8 x double> %4964, %4982
  %4984 = fmul <8 x double> %4983, splat (double 0x3FD5555555555555)
  %4985 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4980, <8 x double> splat (double 5.000000e-01), <8 x double> %4984)
  %4986 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4964, <8 x double> %4985, <8 x double> %4978)
  %4987 = getelementptr inbounds nuw i8, ptr %4873, i64 8536
  %4988 = load ptr, ptr %4987, align 8, !tbaa !58
  %4989 = getelementptr inbounds <8 x double>, ptr %4988, i64 %4939
  %4990 = load <8 x double>, ptr %4989, align 64, !tbaa !26
  %4991 = fmul <8 x double> %4990, %4982
  %4992 = fmul <8 x double> %4991, splat (double 0x3FD5555555555555)
  %4993 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4980, <8 x double> splat (double 5.000000e-01), <8 x double> %4992)
  %4994 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4990, <8 x double> %4993, <8 x double> %4978)
  %4995 = fmul <8 x double> %4990, %4994
  br label %4996

4996:                                             ; preds = %4976, %4968
  %4997 = phi ptr [ %4988, %4976 ], [ %4972, %4968 ]
  %4998 = phi <8 x double> [ %4986, %4976 ], [ %4970, %4968 ]
  %4999 = phi <8 x double> [ %4995, %4976 ], [ %4975, %4968 ]
  %5000 = phi ptr [ %4987, %4976 ], [ %4971, %4968 ]
  %5001 = sitofp i64 %4929 to double
  %5002 = insertelement <8 x double> poison, double %5001, i64 0
  %5003 = shufflevector <8 x double> %5002, <8 x double> poison, <8 x i32> zeroinitializer
  %5004 = fmul <8 x double> %4964, %4998
  %5005 = fdiv <8 x double> %4946, %5003
  %5006 = getelementptr i8, ptr %4962, i64 -64
  %5007 = getelementptr i8, ptr %4938, i64 -64
  %5008 = icmp sgt i64 %4928, 0
  br i1 %5008, label %5009, label %5110

5009:                                             ; preds = %4996
  %5010 = fmul <8 x double> %4964, %4998
  %5011 = getelementptr inbounds nuw i8, ptr %4873, i64 640
  %5012 = getelementptr inbounds nuw i8, ptr %4873, i64 384
  %5013 = getelementptr inbounds nuw i8, ptr %4873, i64 448
  %5014 = getelementptr inbounds nuw i8, ptr %4873, i64 512
  %5015 = getelementptr inbounds nuw i8, ptr %4873, i64 1536
  %5016 = getelementptr inbounds nuw i8, ptr %4873, i64 8608
  %5017 = icmp eq <8 x i64> %4924, zeroinitializer
  br label %5018

5018:                                             ; preds = %5009, %5097
  %5019 = phi <8 x double> [ %4964, %5009 ], [ %5078, %5097 ]
  %5020 = phi <8 x double> [ %5010, %5009 ], [ %5077, %5097 ]
  %5021 = phi <8 x double> [ %4959, %5009 ], [ %5079, %5097 ]
  %5022 = phi <8 x double> [ %4941, %5009 ], [ %5080, %5097 ]
  %5023 = phi i64 [ %4939, %5009 ], [ %5103, %5097 ]
  %5024 = icmp eq i64 %5023, 0
  br i1 %5024, label %5025, label %5029

5025:                                             ; preds = %5018
  %5026 = fdiv <8 x double> zeroinitializer, %5021
  %5027 = fsub <8 x double> %5020, %5020
  %5028 = fmul <8 x double> %5026, %5027
  br label %5074

5029:                                             ; preds = %5018
  %5030 = getelementptr <8 x double>, ptr %5006, i64 %5023
  %5031 = load <8 x double>, ptr %5030, align 64, !tbaa !26
  %5032 = load i64, ptr %4965, align 64, !tbaa !31
  %5033 = icmp sgt i64 %5023, %5032
  br i1 %5033, label %5036, label %5034

5034:                                             ; preds = %5029
  %5035 = load <8 x double>, ptr %5011, align 64, !tbaa !26
  br label %5044

5036:                                             ; preds = %5029
  %5037 = load <8 x double>, ptr %5012, align 64, !tbaa !26
  %5038 = load <8 x double>, ptr %5013, align 64, !tbaa !26
  %5039 = load <8 x double>, ptr %5014, align 64, !tbaa !26
  %5040 = fmul <8 x double> %5031, %5039
  %5041 = fmul <8 x double> %5040, splat (double 0x3FD5555555555555)
  %5042 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5038, <8 x double> splat (double 5.000000e-01), <8 x double> %5041)
  %5043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5031, <8 x double> %5042, <8 x double> %5037)
  br label %5044

5044:                                             ; preds = %5034, %5036
  %5045 = phi <8 x double> [ %5043, %5036 ], [ %5035, %5034 ]
  %5046 = fmul <8 x double> %5031, %5045
  %5047 = icmp slt i64 %5023, %5032
  br i1 %5047, label %5048, label %5055

5048:                                             ; preds = %5044
  %5049 = load ptr, ptr %5016, align 32, !tbaa !74
  %5050 = getelementptr inbounds nuw <8 x double>, ptr %5049, i64 %5023
  %5051 = load <8 x double>, ptr %5050, align 64, !tbaa !26
  %5052 = load <8 x double>, ptr %5015, align 64, !tbaa !26
  %5053 = fmul <8 x double> %5051, %5052
  %5054 = fmul <8 x double> %5051, %5052
  br label %5064

5055:                                             ; preds = %5044
  %5056 = load <8 x double>, ptr %5015, align 64, !tbaa !26
  %5057 = load ptr, ptr %5016, align 32, !tbaa !74
  %5058 = getelementptr inbounds nuw <8 x double>, ptr %5057, i64 %5023
  %5059 = load <8 x double>, ptr %5058, align 64, !tbaa !26
  %5060 = fsub <8 x double> %4959, %5056
  %5061 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5059, <8 x double> %5060, <8 x double> %5056)
  %5062 = fsub <8 x double> %4932, %5056
  %5063 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5059, <8 x double> %5062, <8 x double> %5056)
  br label %5064

5064:                                             ; preds = %5055, %5048
  %5065 = phi <8 x double> [ %5053, %5048 ], [ %5061, %5055 ]
  %5066 = phi <8 x double> [ %5054, %5048 ], [ %5063, %5055 ]
  %5067 = fsub <8 x double> %5066, %5065
  %5068 = fsub <8 x double> %5021, %5065
  %5069 = fdiv <8 x double> %5067, %5068
  %5070 = fsub <8 x double> %5046, %5020
  %5071 = fmul <8 x double> %5070, %5069
  %5072 = getelementptr <8 x double>, ptr %5007, i64 %5023
  %5073 = load <8 x double>, ptr %5072, align 64, !tbaa !26
  br label %5074

5074:                                             ; preds = %5064, %5025
  %5075 = phi <8 x double> [ %5071, %5064 ], [ %5028, %5025 ]
  %5076 = phi <8 x double> [ %5069, %5064 ], [ %5026, %5025 ]
  %5077 = phi <8 x double> [ %5046, %5064 ], [ %5020, %5025 ]
  %5078 = phi <8 x double> [ %5031, %5064 ], [ %5019, %5025 ]
  %5079 = phi <8 x double> [ %5065, %5064 ], [ zeroinitializer, %5025 ]
  %5080 = phi <8 x double> [ %5073, %5064 ], [ %5022, %5025 ]
  %5081 = getelementptr inbounds nuw <8 x double>, ptr %4938, i64 %5023
  %5082 = fsub <8 x double> %5080, %5022
  %5083 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5082, <8 x double> %5076, <8 x double> %5022)
  %5084 = load <8 x double>, ptr %5081, align 64, !tbaa !26
  %5085 = select <8 x i1> %5017, <8 x double> %5084, <8 x double> %5083
  store <8 x double> %5085, ptr %5081, align 64, !tbaa !26
  %5086 = getelementptr inbounds nuw <8 x double>, ptr %4962, i64 %5023
  %5087 = load i64, ptr %4965, align 64, !tbaa !31
  %5088 = icmp slt i64 %5023, %5087
  br i1 %5088, label %5089, label %5091

5089:                                             ; preds = %5074
  %5090 = load <8 x double>, ptr %5011, align 64, !tbaa !26
  br label %5097

5091:                                             ; preds = %5074
  %5092 = load <8 x double>, ptr %5012, align 64, !tbaa !26
  %5093 = load <8 x double>, ptr %5013, align 64, !tbaa !26
  %5094 = load <8 x double>, ptr %5014, align 64, !tbaa !26
  %5095 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5019, <8 x double> %5094, <8 x double> %5093)
  %5096 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5019, <8 x double> %5095, <8 x double> %5092)
  br label %5097

5097:                                             ; preds = %5091, %5089
  %5098 = phi <8 x double> [ %5090, %5089 ], [ %5096, %5091 ]
  %5099 = fdiv <8 x double> %5075, %5098
  %5100 = fadd <8 x double> %5019, %5099
  %5101 = load <8 x double>, ptr %5086, align 64, !tbaa !26
  %5102 = select <8 x i1> %5017, <8 x double> %5101, <8 x double> %5100
  store <8 x double> %5102, ptr %5086, align 64, !tbaa !26
  %5103 = add nsw i64 %5023, -1
  %5104 = icmp sgt i64 %5023, 0
  br i1 %5104, label %5018, label %5105, !llvm.loop !150

5105:                                             ; preds = %5097
  %5106 = load ptr, ptr %5000, align 8, !tbaa !58
  %5107 = load i64, ptr %141, align 16, !tbaa !21
  %5108 = load i64, ptr %4965, align 64, !tbaa !31
  %5109 = add nsw i64 %5107, -1
  br label %5110

5110:                                             ; preds = %5105, %4996
  %5111 = phi i64 [ %5109, %5105 ], [ %4939, %4996 ]
  %5112 = phi i64 [ %5108, %5105 ], [ %4966, %4996 ]
  %5113 = phi i64 [ %5107, %5105 ], [ %4928, %4996 ]
  %5114 = phi ptr [ %5106, %5105 ], [ %4997, %4996 ]
  %5115 = getelementptr inbounds <8 x double>, ptr %5114, i64 %5111
  %5116 = load <8 x double>, ptr %5115, align 64, !tbaa !26
  %5117 = icmp sgt i64 %5113, %5112
  br i1 %5117, label %5121, label %5118

5118:                                             ; preds = %5110
  %5119 = getelementptr inbounds nuw i8, ptr %4873, i64 640
  %5120 = load <8 x double>, ptr %5119, align 64, !tbaa !26
  br label %5132

5121:                                             ; preds = %5110
  %5122 = getelementptr inbounds nuw i8, ptr %4873, i64 384
  %5123 = load <8 x double>, ptr %5122, align 64, !tbaa !26
  %5124 = getelementptr inbounds nuw i8, ptr %4873, i64 448
  %5125 = load <8 x double>, ptr %5124, align 64, !tbaa !26
  %5126 = getelementptr inbounds nuw i8, ptr %4873, i64 512
  %5127 = load <8 x double>, ptr %5126, align 64, !tbaa !26
  %5128 = fmul <8 x double> %5116, %5127
  %5129 = fmul <8 x double> %5128, splat (double 0x3FD5555555555555)
  %5130 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5125, <8 x double> splat (double 5.000000e-01), <8 x double> %5129)
  %5131 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5116, <8 x double> %5130, <8 x double> %5123)
  br label %5132

5132:                                             ; preds = %5121, %5118
  %5133 = phi <8 x double> [ %5120, %5118 ], [ %5131, %5121 ]
  %5134 = getelementptr i8, ptr %5114, i64 -64
  %5135 = icmp sgt i64 %5113, 0
  br i1 %5135, label %5136, label %5145

5136:                                             ; preds = %5132
  %5137 = fmul <8 x double> %5116, %5133
  %5138 = getelementptr inbounds nuw i8, ptr %4873, i64 640
  %5139 = getelementptr inbounds nuw i8, ptr %4873, i64 384
  %5140 = getelementptr inbounds nuw i8, ptr %4873, i64 448
  %5141 = getelementptr inbounds nuw i8, ptr %4873, i64 512
  %5142 = getelementptr inbounds nuw i8, ptr %4873, i64 1536
  %5143 = getelementptr inbounds nuw i8, ptr %4873, i64 8608
  %5144 = icmp eq <8 x i64> %4924, zeroinitializer
  br label %5153

5145:                                             ; preds = %5217, %5132
  %5146 = icmp sgt i64 %4929, 0
  br i1 %5146, label %5147, label %5225

5147:                                             ; preds = %5145
  %5148 = getelementptr inbounds nuw i8, ptr %4873, i64 8696
  %5149 = icmp eq <8 x i64> %4924, zeroinitializer
  %5150 = getelementptr inbounds nuw i8, ptr %4873, i64 8704
  %5151 = getelementptr inbounds nuw i8, ptr %4873, i64 8648
  %5152 = getelementptr inbounds nuw i8, ptr %4873, i64 8656
  br label %5296

5153:                                             ; preds = %5136, %5217
  %5154 = phi <8 x double> [ %5116, %5136 ], [ %5200, %5217 ]
  %5155 = phi <8 x double> [ %5137, %5136 ], [ %5201, %5217 ]
  %5156 = phi <8 x double> [ %4959, %5136 ], [ %5199, %5217 ]
  %5157 = phi i64 [ %5111, %5136 ], [ %5223, %5217 ]
  %5158 = icmp eq i64 %5157, 0
  %5159 = load i64, ptr %4965, align 64, !tbaa !31
  br i1 %5158, label %5198, label %5160

5160:                                             ; preds = %5153
  %5161 = getelementptr <8 x double>, ptr %5134, i64 %5157
  %5162 = load <8 x double>, ptr %5161, align 64, !tbaa !26
  %5163 = icmp sgt i64 %5157, %5159
  br i1 %5163, label %5166, label %5164

5164:                                             ; preds = %5160
  %5165 = load <8 x double>, ptr %5138, align 64, !tbaa !26
  br label %5174

5166:                                             ; preds = %5160
  %5167 = load <8 x double>, ptr %5139, align 64, !tbaa !26
  %5168 = load <8 x double>, ptr %5140, align 64, !tbaa !26
  %5169 = load <8 x double>, ptr %5141, align 64, !tbaa !26
  %5170 = fmul <8 x double> %5162, %5169
  %5171 = fmul <8 x double> %5170, splat (double 0x3FD5555555555555)
  %5172 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5168, <8 x double> splat (double 5.000000e-01), <8 x double> %5171)
  %5173 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5162, <8 x double> %5172, <8 x double> %5167)
  br label %5174

5174:                                             ; preds = %5164, %5166
  %5175 = phi <8 x double> [ %5173, %5166 ], [ %5165, %5164 ]
  %5176 = fmul <8 x double> %5162, %5175
  %5177 = icmp slt i64 %5157, %5159
  br i1 %5177, label %5178, label %5185

5178:                                             ; preds = %5174
  %5179 = load ptr, ptr %5143, align 32, !tbaa !74
  %5180 = getelementptr inbounds nuw <8 x double>, ptr %5179, i64 %5157
  %5181 = load <8 x double>, ptr %5180, align 64, !tbaa !26
  %5182 = load <8 x double>, ptr %5142, align 64, !tbaa !26
  %5183 = fmul <8 x double> %5181, %5182
  %5184 = fmul <8 x double> %5181, %5182
  br label %5194

5185:                                             ; preds = %5174
  %5186 = load <8 x double>, ptr %5142, align 64, !tbaa !26
  %5187 = load ptr, ptr %5143, align 32, !tbaa !74
  %5188 = getelementptr inbounds nuw <8 x double>, ptr %5187, i64 %5157
  %5189 = load <8 x double>, ptr %5188, align 64, !tbaa !26
  %5190 = fsub <8 x double> %4959, %5186
  %5191 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5189, <8 x double> %5190, <8 x double> %5186)
  %5192 = fsub <8 x double> %4932, %5186
  %5193 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5189, <8 x double> %5192, <8 x double> %5186)
  br label %5194

5194:                                             ; preds = %5185, %5178
  %5195 = phi <8 x double> [ %5183, %5178 ], [ %5191, %5185 ]
  %5196 = phi <8 x double> [ %5184, %5178 ], [ %5193, %5185 ]
  %5197 = fsub <8 x double> %5196, %5195
  br label %5198

5198:                                             ; preds = %5153, %5194
  %5199 = phi <8 x double> [ %5195, %5194 ], [ zeroinitializer, %5153 ]
  %5200 = phi <8 x double> [ %5162, %5194 ], [ %5154, %5153 ]
  %5201 = phi <8 x double> [ %5176, %5194 ], [ %5155, %5153 ]
  %5202 = phi <8 x double> [ %5197, %5194 ], [ zeroinitializer, %5153 ]
  %5203 = fsub <8 x double> %5156, %5199
  %5204 = fdiv <8 x double> %5202, %5203
  %5205 = fsub <8 x double> %5201, %5155
  %5206 = fmul <8 x double> %5205, %5204
  %5207 = getelementptr inbounds nuw <8 x double>, ptr %5114, i64 %5157
  %5208 = icmp slt i64 %5157, %5159
  br i1 %5208, label %5209, label %5211

5209:                                             ; preds = %5198
  %5210 = load <8 x double>, ptr %5138, align 64, !tbaa !26
  br label %5217

5211:                                             ; preds = %5198
  %5212 = load <8 x double>, ptr %5139, align 64, !tbaa !26
  %5213 = load <8 x double>, ptr %5140, align 64, !tbaa !26
  %5214 = load <8 x double>, ptr %5141, align 64, !tbaa !26
  %5215 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5154, <8 x double> %5214, <8 x double> %5213)
  %5216 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5154, <8 x double> %5215, <8 x double> %5212)
  br label %5217

5217:                                             ; preds = %5211, %5209
  %5218 = phi <8 x double> [ %5210, %5209 ], [ %5216, %5211 ]
  %5219 = fdiv <8 x double> %5206, %5218
  %5220 = fadd <8 x double> %5154, %5219
  %5221 = load <8 x double>, ptr %5207, align 64, !tbaa !26
  %5222 = select <8 x i1> %5144, <8 x double> %5221, <8 x double> %5220
  store <8 x double> %5222, ptr %5207, align 64, !tbaa !26
  %5223 = add nsw i64 %5157, -1
  %5224 = icmp sgt i64 %5157, 0
  br i1 %5224, label %5153, label %5145, !llvm.loop !150

5225:                                             ; preds = %5296, %5145
  %5226 = getelementptr inbounds nuw i8, ptr %4873, i64 8696
  %5227 = load ptr, ptr %5226, align 8, !tbaa !51
  %5228 = getelementptr inbounds <8 x double>, ptr %5227, i64 %4929
  %5229 = getelementptr inbounds nuw i8, ptr %4873, i64 1408
  %5230 = load <8 x double>, ptr %5229, align 64, !tbaa !26
  %5231 = load <8 x double>, ptr %5228, align 64, !tbaa !26
  %5232 = icmp eq <8 x i64> %4924, zeroinitializer
  %5233 = select <8 x i1> %5232, <8 x double> %5231, <8 x double> %5230
  store <8 x double> %5233, ptr %5228, align 64, !tbaa !26
  %5234 = getelementptr inbounds nuw i8, ptr %4873, i64 8704
  %5235 = load ptr, ptr %5234, align 64, !tbaa !61
  %5236 = getelementptr inbounds <8 x double>, ptr %5235, i64 %4929
  %5237 = load <8 x double>, ptr %5229, align 64, !tbaa !26
  %5238 = load <8 x double>, ptr %5236, align 64, !tbaa !26
  %5239 = select <8 x i1> %5232, <8 x double> %5238, <8 x double> %5237
  store <8 x double> %5239, ptr %5236, align 64, !tbaa !26
  %5240 = getelementptr inbounds nuw i8, ptr %4873, i64 4736
  %5241 = fneg <8 x double> %4960
  %5242 = getelementptr inbounds nuw i8, ptr %4873, i64 768
  %5243 = load <8 x double>, ptr %4930, align 64, !tbaa !26
  %5244 = select <8 x i1> %5232, <8 x double> %5243, <8 x double> %4948
  store <8 x double> %5244, ptr %4930, align 64, !tbaa !26
  %5245 = getelementptr inbounds nuw i8, ptr %4873, i64 3904
  %5246 = load <8 x double>, ptr %5245, align 64, !tbaa !26
  %5247 = select <8 x i1> %5232, <8 x double> %5246, <8 x double> %4959
  store <8 x double> %5247, ptr %5245, align 64, !tbaa !26
  %5248 = getelementptr inbounds nuw i8, ptr %4873, i64 4672
  %5249 = load <8 x double>, ptr %5248, align 64, !tbaa !26
  %5250 = select <8 x i1> %5232, <8 x double> %5249, <8 x double> %4959
  store <8 x double> %5250, ptr %5248, align 64, !tbaa !26
  %5251 = getelementptr inbounds nuw i8, ptr %4873, i64 4032
  %5252 = load <8 x double>, ptr %5251, align 64, !tbaa !26
  %5253 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5241, <8 x double> %4942, <8 x double> %5252)
  %5254 = select <8 x i1> %5232, <8 x double> %5252, <8 x double> %5253
  store <8 x double> %5254, ptr %5251, align 64, !tbaa !26
  %5255 = getelementptr inbounds nuw i8, ptr %4873, i64 3968
  %5256 = load <8 x double>, ptr %5255, align 64, !tbaa !26
  %5257 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4960, <8 x double> %4942, <8 x double> %5256)
  %5258 = select <8 x i1> %5232, <8 x double> %5256, <8 x double> %5257
  store <8 x double> %5258, ptr %5255, align 64, !tbaa !26
  %5259 = getelementptr inbounds nuw i8, ptr %4873, i64 4288
  %5260 = load <8 x double>, ptr %5259, align 64, !tbaa !26
  %5261 = load <8 x double>, ptr %5242, align 64, !tbaa !26
  %5262 = fneg <8 x double> %5261
  %5263 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5262, <8 x double> %4934, <8 x double> %5004)
  %5264 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4960, <8 x double> %5263, <8 x double> %5260)
  %5265 = select <8 x i1> %5232, <8 x double> %5260, <8 x double> %5264
  store <8 x double> %5265, ptr %5259, align 64, !tbaa !26
  %5266 = load <8 x double>, ptr %5240, align 64, !tbaa !26
  %5267 = select <8 x i1> %5232, <8 x double> %5266, <8 x double> %4948
  store <8 x double> %5267, ptr %5240, align 64, !tbaa !26
  %5268 = getelementptr inbounds nuw i8, ptr %4873, i64 4800
  %5269 = load <8 x double>, ptr %5268, align 64, !tbaa !26
  %5270 = select <8 x i1> %5232, <8 x double> %5269, <8 x double> %4959
  store <8 x double> %5270, ptr %5268, align 64, !tbaa !26
  %5271 = getelementptr inbounds nuw i8, ptr %4873, i64 5568
  %5272 = load <8 x double>, ptr %5271, align 64, !tbaa !26
  %5273 = select <8 x i1> %5232, <8 x double> %5272, <8 x double> %4959
  store <8 x double> %5273, ptr %5271, align 64, !tbaa !26
  %5274 = getelementptr inbounds nuw i8, ptr %4873, i64 4928
  %5275 = load <8 x double>, ptr %5274, align 64, !tbaa !26
  %5276 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5241, <8 x double> %4942, <8 x double> %5275)
  %5277 = select <8 x i1> %5232, <8 x double> %5275, <8 x double> %5276
  store <8 x double> %5277, ptr %5274, align 64, !tbaa !26
  %5278 = getelementptr inbounds nuw i8, ptr %4873, i64 4864
  %5279 = load <8 x double>, ptr %5278, align 64, !tbaa !26
  %5280 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4960, <8 x double> %4942, <8 x double> %5279)
  %5281 = select <8 x i1> %5232, <8 x double> %5279, <8 x double> %5280
  store <8 x double> %5281, ptr %5278, align 64, !tbaa !26
  %5282 = getelementptr inbounds nuw i8, ptr %4873, i64 5184
  %5283 = load <8 x double>, ptr %5282, align 64, !tbaa !26
  %5284 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5262, <8 x double> %4934, <8 x double> %4999)
  %5285 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4960, <8 x double> %5284, <8 x double> %5283)
  %5286 = select <8 x i1> %5232, <8 x double> %5283, <8 x double> %5285
  store <8 x double> %5286, ptr %5282, align 64, !tbaa !26
  %5287 = load <8 x i64>, ptr %4887, align 64, !tbaa !26
  %5288 = or <8 x i64> %5287, %4924
  store <8 x i64> %5288, ptr %4887, align 64, !tbaa !26
  %5289 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %5290 = fmul <8 x double> %5289, splat (double 4.000000e+01)
  %5291 = fcmp olt <8 x double> %4871, %5290
  %5292 = select <8 x i1> %5291, <8 x double> %4871, <8 x double> %5290
  %5293 = icmp ne <8 x i64> %4924, zeroinitializer
  %5294 = select <8 x i1> %4914, <8 x i1> %5293, <8 x i1> zeroinitializer
  %5295 = select <8 x i1> %5294, <8 x double> %5292, <8 x double> %4871
  br label %5327

5296:                                             ; preds = %5147, %5296
  %5297 = phi i64 [ 0, %5147 ], [ %5325, %5296 ]
  %5298 = uitofp nneg i64 %5297 to double
  %5299 = insertelement <8 x double> poison, double %5298, i64 0
  %5300 = shufflevector <8 x double> %5299, <8 x double> poison, <8 x i32> zeroinitializer
  %5301 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5300, <8 x double> %5005, <8 x double> %4948)
  %5302 = load <8 x double>, ptr %4949, align 64, !tbaa !26
  %5303 = load <8 x double>, ptr %4951, align 64, !tbaa !26
  %5304 = load <8 x double>, ptr %4953, align 64, !tbaa !26
  %5305 = load <8 x double>, ptr %4955, align 64, !tbaa !26
  %5306 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5301, <8 x double> %5305, <8 x double> %5304)
  %5307 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5301, <8 x double> %5306, <8 x double> %5303)
  %5308 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5301, <8 x double> %5307, <8 x double> %5302)
  %5309 = load ptr, ptr %5148, align 8, !tbaa !51
  %5310 = getelementptr inbounds nuw <8 x double>, ptr %5309, i64 %5297
  %5311 = load <8 x double>, ptr %5310, align 64, !tbaa !26
  %5312 = select <8 x i1> %5149, <8 x double> %5311, <8 x double> %5308
  store <8 x double> %5312, ptr %5310, align 64, !tbaa !26
  %5313 = load ptr, ptr %5150, align 64, !tbaa !61
  %5314 = getelementptr inbounds nuw <8 x double>, ptr %5313, i64 %5297
  %5315 = load <8 x double>, ptr %5314, align 64, !tbaa !26
  %5316 = select <8 x i1> %5149, <8 x double> %5315, <8 x double> %5308
  store <8 x double> %5316, ptr %5314, align 64, !tbaa !26
  %5317 = load ptr, ptr %5151, align 8, !tbaa !52
  %5318 = getelementptr inbounds nuw <8 x double>, ptr %5317, i64 %5297
  %5319 = load <8 x double>, ptr %5318, align 64, !tbaa !26
  %5320 = select <8 x i1> %5149, <8 x double> %5319, <8 x double> %4934
  store <8 x double> %5320, ptr %5318, align 64, !tbaa !26
  %5321 = load ptr, ptr %5152, align 16, !tbaa !63
  %5322 = getelementptr inbounds nuw <8 x double>, ptr %5321, i64 %5297
  %5323 = load <8 x double>, ptr %5322, align 64, !tbaa !26
  %5324 = select <8 x i1> %5149, <8 x double> %5323, <8 x double> %4934
  store <8 x double> %5324, ptr %5322, align 64, !tbaa !26
  %5325 = add nuw nsw i64 %5297, 1
  %5326 = icmp eq i64 %5325, %4929
  br i1 %5326, label %5225, label %5296, !llvm.loop !151

5327:                                             ; preds = %5225, %4869
  %5328 = phi <8 x double> [ %5295, %5225 ], [ %4871, %4869 ]
  %5329 = add nuw nsw i64 %4870, 1
  %5330 = load i64, ptr %178, align 8, !tbaa !20
  %5331 = icmp slt i64 %5329, %5330
  br i1 %5331, label %4869, label %5332, !llvm.loop !152

5332:                                             ; preds = %5327
  %5333 = load <8 x double>, ptr %158, align 64, !tbaa !26
  br label %5334

5334:                                             ; preds = %5332, %4827
  %5335 = phi <8 x double> [ %4836, %4827 ], [ %5333, %5332 ]
  %5336 = phi <8 x double> [ %4859, %4827 ], [ %5328, %5332 ]
  %5337 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %5338 = select <8 x i1> %4404, <8 x double> %5337, <8 x double> %5336
  store <8 x double> %5338, ptr %161, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %4344, ptr %13, align 64, !tbaa !26
  %5339 = load ptr, ptr %239, align 64, !tbaa !39
  %5340 = getelementptr inbounds nuw i8, ptr %5339, i64 64
  store <8 x double> %5335, ptr %5339, align 64, !tbaa !26
  %5341 = load <8 x double>, ptr %240, align 64, !tbaa !26
  %5342 = getelementptr inbounds nuw i8, ptr %5339, i64 128
  store <8 x double> %5341, ptr %5340, align 64, !tbaa !26
  %5343 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5344 = getelementptr inbounds nuw i8, ptr %5339, i64 192
  store <8 x double> %5343, ptr %5342, align 64, !tbaa !26
  %5345 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %5346 = getelementptr inbounds nuw i8, ptr %5339, i64 256
  store <8 x double> %5345, ptr %5344, align 64, !tbaa !26
  %5347 = load i64, ptr %178, align 8, !tbaa !20
  %5348 = icmp sgt i64 %5347, 0
  br i1 %5348, label %5353, label %5349

5349:                                             ; preds = %5353, %5334
  %5350 = phi ptr [ %5346, %5334 ], [ %5359, %5353 ]
  %5351 = load i64, ptr %241, align 8, !tbaa !153
  %5352 = icmp eq i64 %5351, 0
  br i1 %5352, label %5488, label %5363

5353:                                             ; preds = %5334, %5353
  %5354 = phi ptr [ %5359, %5353 ], [ %5346, %5334 ]
  %5355 = phi i64 [ %5360, %5353 ], [ 0, %5334 ]
  %5356 = load ptr, ptr %151, align 8, !tbaa !28
  %5357 = getelementptr inbounds nuw %struct.Piece, ptr %5356, i64 %5355, i32 35
  %5358 = load <8 x double>, ptr %5357, align 64, !tbaa !26
  %5359 = getelementptr inbounds nuw i8, ptr %5354, i64 64
  store <8 x double> %5358, ptr %5354, align 64, !tbaa !26
  %5360 = add nuw nsw i64 %5355, 1
  %5361 = load i64, ptr %178, align 8, !tbaa !20
  %5362 = icmp slt i64 %5360, %5361
  br i1 %5362, label %5353, label %5349, !llvm.loop !154

5363:                                             ; preds = %5349
  %5364 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %5365 = getelementptr inbounds nuw i8, ptr %5350, i64 64
  store <8 x double> %5364, ptr %5350, align 64, !tbaa !26
  %5366 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %5367 = getelementptr inbounds nuw i8, ptr %5350, i64 128
  store <8 x double> %5366, ptr %5365, align 64, !tbaa !26
  %5368 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5369 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %5370 = fsub <8 x double> %5368, %5369
  %5371 = fcmp ogt <8 x double> %5370, zeroinitializer
  %5372 = select <8 x i1> %5371, <8 x double> %5370, <8 x double> zeroinitializer
  store <8 x double> %5372, ptr %5367, align 64, !tbaa !26
  %5373 = load i64, ptr %178, align 8, !tbaa !20
  %5374 = icmp sgt i64 %5373, 0
  br i1 %5374, label %5375, label %5488

5375:                                             ; preds = %5363
  %5376 = getelementptr inbounds nuw i8, ptr %5350, i64 192
  br label %5377

5377:                                             ; preds = %5375, %5377
  %5378 = phi ptr [ %5484, %5377 ], [ %5376, %5375 ]
  %5379 = phi i64 [ %5485, %5377 ], [ 0, %5375 ]
  %5380 = load ptr, ptr %151, align 8, !tbaa !28
  %5381 = getelementptr inbounds nuw %struct.Piece, ptr %5380, i64 %5379
  %5382 = getelementptr inbounds nuw i8, ptr %5381, i64 8528
  %5383 = load ptr, ptr %5382, align 16, !tbaa !48
  %5384 = load i64, ptr %141, align 16, !tbaa !21
  %5385 = getelementptr <8 x double>, ptr %5383, i64 %5384
  %5386 = getelementptr i8, ptr %5385, i64 -64
  %5387 = load <8 x double>, ptr %5386, align 64, !tbaa !26
  %5388 = getelementptr inbounds nuw i8, ptr %5381, i64 7232
  %5389 = load <8 x double>, ptr %5388, align 64, !tbaa !26
  %5390 = getelementptr inbounds nuw i8, ptr %5381, i64 5952
  %5391 = load <8 x double>, ptr %5390, align 64, !tbaa !26
  %5392 = fsub <8 x double> %5391, %5387
  %5393 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5389, <8 x double> %5392, <8 x double> %5387)
  %5394 = getelementptr inbounds nuw i8, ptr %5378, i64 64
  store <8 x double> %5393, ptr %5378, align 64, !tbaa !26
  %5395 = getelementptr inbounds nuw i8, ptr %5381, i64 6784
  %5396 = load <8 x double>, ptr %5395, align 64, !tbaa !26
  %5397 = getelementptr inbounds nuw i8, ptr %5378, i64 128
  store <8 x double> %5396, ptr %5394, align 64, !tbaa !26
  %5398 = load <8 x double>, ptr %5381, align 64, !tbaa !26
  %5399 = getelementptr inbounds nuw i8, ptr %5381, i64 3840
  %5400 = load <8 x double>, ptr %5399, align 64, !tbaa !26
  %5401 = fsub <8 x double> %5398, %5400
  %5402 = getelementptr inbounds nuw i8, ptr %5378, i64 192
  store <8 x double> %5401, ptr %5397, align 64, !tbaa !26
  %5403 = getelementptr inbounds nuw i8, ptr %5381, i64 4160
  %5404 = load <8 x double>, ptr %5403, align 64, !tbaa !26
  %5405 = getelementptr inbounds nuw i8, ptr %5378, i64 256
  store <8 x double> %5404, ptr %5402, align 64, !tbaa !26
  %5406 = getelementptr inbounds nuw i8, ptr %5381, i64 4096
  %5407 = load <8 x double>, ptr %5406, align 64, !tbaa !26
  %5408 = getelementptr inbounds nuw i8, ptr %5378, i64 320
  store <8 x double> %5407, ptr %5405, align 64, !tbaa !26
  %5409 = getelementptr inbounds nuw i8, ptr %5381, i64 3968
  %5410 = load <8 x double>, ptr %5409, align 64, !tbaa !26
  %5411 = getelementptr inbounds nuw i8, ptr %5378, i64 384
  store <8 x double> %5410, ptr %5408, align 64, !tbaa !26
  %5412 = getelementptr inbounds nuw i8, ptr %5381, i64 4224
  %5413 = load <8 x double>, ptr %5412, align 64, !tbaa !26
  %5414 = getelementptr inbounds nuw i8, ptr %5378, i64 448
  store <8 x double> %5413, ptr %5411, align 64, !tbaa !26
  %5415 = getelementptr inbounds nuw i8, ptr %5381, i64 8648
  %5416 = load i64, ptr %142, align 8, !tbaa !22
  %5417 = sitofp i64 %5416 to double
  %5418 = tail call double @llvm.fmuladd.f64(double %5417, double 7.500000e-01, double -5.000000e-01)
  %5419 = fcmp ogt double %5418, 0.000000e+00
  %5420 = select i1 %5419, double %5418, double 0.000000e+00
  %5421 = fptosi double %5420 to i64
  %5422 = add nsw i64 %5416, -2
  %5423 = tail call i64 @llvm.smin.i64(i64 %5422, i64 %5421)
  %5424 = sitofp i64 %5423 to double
  %5425 = fsub double %5418, %5424
  %5426 = fsub double 1.000000e+00, %5425
  %5427 = insertelement <8 x double> poison, double %5426, i64 0
  %5428 = shufflevector <8 x double> %5427, <8 x double> poison, <8 x i32> zeroinitializer
  %5429 = load ptr, ptr %5415, align 8, !tbaa !52
  %5430 = getelementptr inbounds <8 x double>, ptr %5429, i64 %5423
  %5431 = load <8 x double>, ptr %5430, align 64, !tbaa !26
  %5432 = insertelement <8 x double> poison, double %5425, i64 0
  %5433 = shufflevector <8 x double> %5432, <8 x double> poison, <8 x i32> zeroinitializer
  %5434 = getelementptr i8, ptr %5430, i64 64
  %5435 = load <8 x double>, ptr %5434, align 64, !tbaa !26
  %5436 = fmul <8 x double> %5435, %5433
  %5437 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5428, <8 x double> %5431, <8 x double> %5436)
  store <8 x double> %5437, ptr %5414, align 64, !tbaa !26
  %5438 = load i64, ptr %142, align 8, !tbaa !22
  %5439 = sitofp i64 %5438 to double
  %5440 = tail call double @llvm.fmuladd.f64(double %5439, double 5.000000e-01, double -5.000000e-01)
  %5441 = fcmp ogt double %5440, 0.000000e+00
  %5442 = select i1 %5441, double %5440, double 0.000000e+00
  %5443 = fptosi double %5442 to i64
  %5444 = add nsw i64 %5438, -2
  %5445 = tail call i64 @llvm.smin.i64(i64 %5444, i64 %5443)
  %5446 = sitofp i64 %5445 to double
  %5447 = fsub double %5440, %5446
  %5448 = fsub double 1.000000e+00, %5447
  %5449 = insertelement <8 x double> poison, double %5448, i64 0
  %5450 = shufflevector <8 x double> %5449, <8 x double> poison, <8 x i32> zeroinitializer
  %5451 = load ptr, ptr %5415, align 8, !tbaa !52
  %5452 = getelementptr inbounds <8 x double>, ptr %5451, i64 %5445
  %5453 = load <8 x double>, ptr %5452, align 64, !tbaa !26
  %5454 = insertelement <8 x double> poison, double %5447, i64 0
  %5455 = shufflevector <8 x double> %5454, <8 x double> poison, <8 x i32> zeroinitializer
  %5456 = getelementptr i8, ptr %5452, i64 64
  %5457 = load <8 x double>, ptr %5456, align 64, !tbaa !26
  %5458 = fmul <8 x double> %5457, %5455
  %5459 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5450, <8 x double> %5453, <8 x double> %5458)
  %5460 = getelementptr inbounds nuw i8, ptr %5378, i64 512
  store <8 x double> %5459, ptr %5460, align 64, !tbaa !26
  %5461 = load i64, ptr %142, align 8, !tbaa !22
  %5462 = sitofp i64 %5461 to double
  %5463 = tail call double @llvm.fmuladd.f64(double %5462, double 2.500000e-01, double -5.000000e-01)
  %5464 = fcmp ogt double %5463, 0.000000e+00
  %5465 = select i1 %5464, double %5463, double 0.000000e+00
  %5466 = fptosi double %5465 to i64
  %5467 = add nsw i64 %5461, -2
  %5468 = tail call i64 @llvm.smin.i64(i64 %5467, i64 %5466)
  %5469 = sitofp i64 %5468 to double
  %5470 = fsub double %5463, %5469
  %5471 = fsub double 1.000000e+00, %5470
  %5472 = insertelement <8 x double> poison, double %5471, i64 0
  %5473 = shufflevector <8 x double> %5472, <8 x double> poison, <8 x i32> zeroinitializer
  %5474 = load ptr, ptr %5415, align 8, !tbaa !52
  %5475 = getelementptr inbounds <8 x double>, ptr %5474, i64 %5468
  %5476 = load <8 x double>, ptr %5475, align 64, !tbaa !26
  %5477 = insertelement <8 x double> poison, double %5470, i64 0
  %5478 = shufflevector <8 x double> %5477, <8 x double> poison, <8 x i32> zeroinitializer
  %5479 = getelementptr i8, ptr %5475, i64 64
  %5480 = load <8 x double>, ptr %5479, align 64, !tbaa !26
  %5481 = fmul <8 x double> %5480, %5478
  %5482 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5473, <8 x double> %5476, <8 x double> %5481)
  %5483 = getelementptr inbounds nuw i8, ptr %5378, i64 576
  store <8 x double> %5482, ptr %5483, align 64, !tbaa !26
  %5484 = getelementptr inbounds nuw i8, ptr %5378, i64 640
  %5485 = add nuw nsw i64 %5379, 1
  %5486 = load i64, ptr %178, align 8, !tbaa !20
  %5487 = icmp slt i64 %5485, %5486
  br i1 %5487, label %5377, label %5488, !llvm.loop !155

5488:                                             ; preds = %5377, %5363, %5349
  %5489 = getelementptr inbounds nuw i8, ptr %5350, i64 192
  br label %5490

5490:                                             ; preds = %5488, %5649
  %5491 = phi i64 [ 0, %5488 ], [ %5650, %5649 ]
  %5492 = getelementptr inbounds nuw i64, ptr %13, i64 %5491
  %5493 = load i64, ptr %5492, align 8, !tbaa !30
  %5494 = icmp eq i64 %5493, 0
  br i1 %5494, label %5649, label %5495

5495:                                             ; preds = %5490
  %5496 = getelementptr inbounds nuw [8 x i64], ptr %242, i64 0, i64 %5491
  %5497 = load i64, ptr %5496, align 8, !tbaa !30
  %5498 = load i64, ptr %243, align 8, !tbaa !156
  %5499 = icmp eq i64 %5497, %5498
  br i1 %5499, label %5503, label %5500

5500:                                             ; preds = %5495
  %5501 = getelementptr inbounds nuw [8 x ptr], ptr %247, i64 0, i64 %5491
  %5502 = load ptr, ptr %5501, align 8, !tbaa !157
  br label %5518

5503:                                             ; preds = %5495
  %5504 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %5491
  %5505 = load i64, ptr %5504, align 8, !tbaa !30
  %5506 = load ptr, ptr %244, align 8, !tbaa !158
  %5507 = load i64, ptr %134, align 8, !tbaa !43
  %5508 = getelementptr inbounds i64, ptr %5506, i64 %5507
  store i64 %5505, ptr %5508, align 8, !tbaa !30
  %5509 = load ptr, ptr %245, align 8, !tbaa !159
  %5510 = load i64, ptr %134, align 8, !tbaa !43
  %5511 = add nsw i64 %5510, 1
  store i64 %5511, ptr %134, align 8, !tbaa !43
  %5512 = load i64, ptr %243, align 8, !tbaa !156
  %5513 = mul nsw i64 %5512, %5510
  %5514 = load i64, ptr %246, align 8, !tbaa !15
  %5515 = mul nsw i64 %5513, %5514
  %5516 = getelementptr inbounds double, ptr %5509, i64 %5515
  %5517 = getelementptr inbounds nuw [8 x ptr], ptr %247, i64 0, i64 %5491
  store ptr %5516, ptr %5517, align 8, !tbaa !157
  br label %5518

5518:                                             ; preds = %5500, %5503
  %5519 = phi i64 [ %5497, %5500 ], [ 0, %5503 ]
  %5520 = phi ptr [ %5502, %5500 ], [ %5516, %5503 ]
  %5521 = add nsw i64 %5519, 1
  store i64 %5521, ptr %5496, align 8, !tbaa !30
  %5522 = load i64, ptr %246, align 8, !tbaa !15
  %5523 = mul nsw i64 %5522, %5519
  %5524 = getelementptr inbounds double, ptr %5520, i64 %5523
  %5525 = load ptr, ptr %239, align 64, !tbaa !39
  %5526 = icmp ult ptr %5525, %5346
  br i1 %5526, label %5592, label %5527

5527:                                             ; preds = %5592, %5518
  %5528 = phi ptr [ %5524, %5518 ], [ %5597, %5592 ]
  %5529 = load i64, ptr %150, align 64, !tbaa !16
  %5530 = icmp sgt i64 %5529, 0
  br i1 %5530, label %5531, label %5579

5531:                                             ; preds = %5527
  %5532 = trunc nuw nsw i64 %5491 to i32
  %5533 = and i64 %5529, 3
  %5534 = icmp ult i64 %5529, 4
  br i1 %5534, label %5563, label %5535

5535:                                             ; preds = %5531
  %5536 = and i64 %5529, 9223372036854775804
  br label %5537

5537:                                             ; preds = %5537, %5535
  %5538 = phi i64 [ 0, %5535 ], [ %5560, %5537 ]
  %5539 = phi ptr [ %5528, %5535 ], [ %5557, %5537 ]
  %5540 = phi i64 [ 0, %5535 ], [ %5561, %5537 ]
  %5541 = getelementptr inbounds nuw <8 x double>, ptr %5346, i64 %5538
  %5542 = getelementptr i8, ptr %5539, i64 8
  %5543 = load <8 x double>, ptr %5541, align 64, !tbaa !26
  %5544 = extractelement <8 x double> %5543, i32 %5532
  store double %5544, ptr %5539, align 8, !tbaa !44
  %5545 = or disjoint i64 %5538, 1
  %5546 = getelementptr inbounds nuw <8 x double>, ptr %5346, i64 %5545
  %5547 = getelementptr i8, ptr %5539, i64 16
  %5548 = load <8 x double>, ptr %5546, align 64, !tbaa !26
  %5549 = extractelement <8 x double> %5548, i32 %5532
  store double %5549, ptr %5542, align 8, !tbaa !44
  %5550 = or disjoint i64 %5538, 2
  %5551 = getelementptr inbounds nuw <8 x double>, ptr %5346, i64 %5550
  %5552 = getelementptr i8, ptr %5539, i64 24
  %5553 = load <8 x double>, ptr %5551, align 64, !tbaa !26
  %5554 = extractelement <8 x double> %5553, i32 %5532
  store double %5554, ptr %5547, align 8, !tbaa !44
  %5555 = or disjoint i64 %5538, 3
  %5556 = getelementptr inbounds nuw <8 x double>, ptr %5346, i64 %5555
  %5557 = getelementptr i8, ptr %5539, i64 32
  %5558 = load <8 x double>, ptr %5556, align 64, !tbaa !26
  %5559 = extractelement <8 x double> %5558, i32 %5532
  store double %5559, ptr %5552, align 8, !tbaa !44
  %5560 = add nuw nsw i64 %5538, 4
  %5561 = add i64 %5540, 4
  %5562 = icmp eq i64 %5561, %5536
  br i1 %5562, label %5563, label %5537, !llvm.loop !160

5563:                                             ; preds = %5537, %5531
  %5564 = phi ptr [ poison, %5531 ], [ %5557, %5537 ]
  %5565 = phi i64 [ 0, %5531 ], [ %5560, %5537 ]
  %5566 = phi ptr [ %5528, %5531 ], [ %5557, %5537 ]
  %5567 = icmp eq i64 %5533, 0
  br i1 %5567, label %5579, label %5568

5568:                                             ; preds = %5563, %5568
  %5569 = phi i64 [ %5576, %5568 ], [ %5565, %5563 ]
  %5570 = phi ptr [ %5573, %5568 ], [ %5566, %5563 ]
  %5571 = phi i64 [ %5577, %5568 ], [ 0, %5563 ]
  %5572 = getelementptr inbounds nuw <8 x double>, ptr %5346, i64 %5569
  %5573 = getelementptr i8, ptr %5570, i64 8
  %5574 = load <8 x double>, ptr %5572, align 64, !tbaa !26
  %5575 = extractelement <8 x double> %5574, i32 %5532
  store double %5575, ptr %5570, align 8, !tbaa !44
  %5576 = add nuw nsw i64 %5569, 1
  %5577 = add i64 %5571, 1
  %5578 = icmp eq i64 %5577, %5533
  br i1 %5578, label %5579, label %5568, !llvm.loop !161

5579:                                             ; preds = %5563, %5568, %5527
  %5580 = phi ptr [ %5528, %5527 ], [ %5564, %5563 ], [ %5573, %5568 ]
  %5581 = load i64, ptr %241, align 8, !tbaa !153
  %5582 = icmp eq i64 %5581, 0
  br i1 %5582, label %5649, label %5583

5583:                                             ; preds = %5579
  %5584 = getelementptr inbounds nuw double, ptr %5350, i64 %5491
  %5585 = load double, ptr %5584, align 8, !tbaa !44
  %5586 = getelementptr inbounds nuw i8, ptr %5580, i64 8
  store double %5585, ptr %5580, align 8, !tbaa !44
  %5587 = getelementptr inbounds nuw i8, ptr %5584, i64 64
  %5588 = load double, ptr %5587, align 8, !tbaa !44
  %5589 = getelementptr inbounds nuw i8, ptr %5580, i64 16
  store double %5588, ptr %5586, align 8, !tbaa !44
  %5590 = getelementptr inbounds nuw i8, ptr %5584, i64 128
  %5591 = load double, ptr %5590, align 8, !tbaa !44
  store double %5591, ptr %5589, align 8, !tbaa !44
  br i1 %5530, label %5600, label %5649

5592:                                             ; preds = %5518, %5592
  %5593 = phi ptr [ %5598, %5592 ], [ %5525, %5518 ]
  %5594 = phi ptr [ %5597, %5592 ], [ %5524, %5518 ]
  %5595 = getelementptr inbounds nuw double, ptr %5593, i64 %5491
  %5596 = load double, ptr %5595, align 8, !tbaa !44
  %5597 = getelementptr inbounds nuw i8, ptr %5594, i64 8
  store double %5596, ptr %5594, align 8, !tbaa !44
  %5598 = getelementptr inbounds nuw i8, ptr %5593, i64 64
  %5599 = icmp ult ptr %5598, %5346
  br i1 %5599, label %5592, label %5527, !llvm.loop !163

5600:                                             ; preds = %5583
  %5601 = getelementptr inbounds nuw i8, ptr %5580, i64 24
  %5602 = trunc nuw nsw i64 %5491 to i32
  br label %5603

5603:                                             ; preds = %5600, %5603
  %5604 = phi i64 [ %5647, %5603 ], [ 0, %5600 ]
  %5605 = phi ptr [ %5646, %5603 ], [ %5601, %5600 ]
  %5606 = mul nuw nsw i64 %5604, 640
  %5607 = getelementptr inbounds nuw i8, ptr %5489, i64 %5606
  %5608 = load <8 x double>, ptr %5607, align 64, !tbaa !26
  %5609 = extractelement <8 x double> %5608, i32 %5602
  %5610 = getelementptr inbounds nuw i8, ptr %5605, i64 8
  store double %5609, ptr %5605, align 8, !tbaa !44
  %5611 = getelementptr inbounds nuw i8, ptr %5607, i64 64
  %5612 = load <8 x double>, ptr %5611, align 64, !tbaa !26
  %5613 = extractelement <8 x double> %5612, i32 %5602
  %5614 = getelementptr inbounds nuw i8, ptr %5605, i64 16
  store double %5613, ptr %5610, align 8, !tbaa !44
  %5615 = getelementptr inbounds nuw i8, ptr %5607, i64 128
  %5616 = load <8 x double>, ptr %5615, align 64, !tbaa !26
  %5617 = extractelement <8 x double> %5616, i32 %5602
  %5618 = getelementptr inbounds nuw i8, ptr %5605, i64 24
  store double %5617, ptr %5614, align 8, !tbaa !44
  %5619 = getelementptr inbounds nuw i8, ptr %5607, i64 192
  %5620 = load <8 x double>, ptr %5619, align 64, !tbaa !26
  %5621 = extractelement <8 x double> %5620, i32 %5602
  %5622 = getelementptr inbounds nuw i8, ptr %5605, i64 32
  store double %5621, ptr %5618, align 8, !tbaa !44
  %5623 = getelementptr inbounds nuw i8, ptr %5607, i64 256
  %5624 = load <8 x double>, ptr %5623, align 64, !tbaa !26
  %5625 = extractelement <8 x double> %5624, i32 %5602
  %5626 = getelementptr inbounds nuw i8, ptr %5605, i64 40
  store double %5625, ptr %5622, align 8, !tbaa !44
  %5627 = getelementptr inbounds nuw i8, ptr %5607, i64 320
  %5628 = load <8 x double>, ptr %5627, align 64, !tbaa !26
  %5629 = extractelement <8 x double> %5628, i32 %5602
  %5630 = getelementptr inbounds nuw i8, ptr %5605, i64 48
  store double %5629, ptr %5626, align 8, !tbaa !44
  %5631 = getelementptr inbounds nuw i8, ptr %5607, i64 384
  %5632 = load <8 x double>, ptr %5631, align 64, !tbaa !26
  %5633 = extractelement <8 x double> %5632, i32 %5602
  %5634 = getelementptr inbounds nuw i8, ptr %5605, i64 56
  store double %5633, ptr %5630, align 8, !tbaa !44
  %5635 = getelementptr inbounds nuw i8, ptr %5607, i64 448
  %5636 = load <8 x double>, ptr %5635, align 64, !tbaa !26
  %5637 = extractelement <8 x double> %5636, i32 %5602
  %5638 = getelementptr inbounds nuw i8, ptr %5605, i64 64
  store double %5637, ptr %5634, align 8, !tbaa !44
  %5639 = getelementptr inbounds nuw i8, ptr %5607, i64 512
  %5640 = load <8 x double>, ptr %5639, align 64, !tbaa !26
  %5641 = extractelement <8 x double> %5640, i32 %5602
  %5642 = getelementptr inbounds nuw i8, ptr %5605, i64 72
  store double %5641, ptr %5638, align 8, !tbaa !44
  %5643 = getelementptr inbounds nuw i8, ptr %5607, i64 576
  %5644 = load <8 x double>, ptr %5643, align 64, !tbaa !26
  %5645 = extractelement <8 x double> %5644, i32 %5602
  %5646 = getelementptr inbounds nuw i8, ptr %5605, i64 80
  store double %5645, ptr %5642, align 8, !tbaa !44
  %5647 = add nuw nsw i64 %5604, 1
  %5648 = icmp eq i64 %5647, %5529
  br i1 %5648, label %5649, label %5603, !llvm.loop !160

5649:                                             ; preds = %5603, %5583, %5579, %5490
  %5650 = add nuw nsw i64 %5491, 1
  %5651 = icmp eq i64 %5650, 8
  br i1 %5651, label %5652, label %5490, !llvm.loop !164

5652:                                             ; preds = %5649
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %5653 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %5654 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %5655 = fsub <8 x double> %5653, %5654
  %5656 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %5657 = fadd <8 x double> %5656, splat (double -1.000000e-09)
  %5658 = fcmp oge <8 x double> %5655, %5657
  %5659 = select <8 x i1> %5658, <8 x i64> %4344, <8 x i64> zeroinitializer
  %5660 = load i64, ptr %178, align 8, !tbaa !20
  %5661 = icmp sgt i64 %5660, 0
  br i1 %5661, label %5662, label %5694

5662:                                             ; preds = %5652
  %5663 = load ptr, ptr %151, align 8, !tbaa !28
  %5664 = and i64 %5660, 1
  %5665 = icmp eq i64 %5660, 1
  br i1 %5665, label %5684, label %5666

5666:                                             ; preds = %5662
  %5667 = and i64 %5660, 9223372036854775806
  br label %5668

5668:                                             ; preds = %5668, %5666
  %5669 = phi i64 [ 0, %5666 ], [ %5681, %5668 ]
  %5670 = phi <8 x double> [ splat (double 1.000000e+09), %5666 ], [ %5680, %5668 ]
  %5671 = phi i64 [ 0, %5666 ], [ %5682, %5668 ]
  %5672 = getelementptr inbounds nuw %struct.Piece, ptr %5663, i64 %5669, i32 35
  %5673 = load <8 x double>, ptr %5672, align 64, !tbaa !26
  %5674 = fcmp olt <8 x double> %5670, %5673
  %5675 = select <8 x i1> %5674, <8 x double> %5670, <8 x double> %5673
  %5676 = or disjoint i64 %5669, 1
  %5677 = getelementptr inbounds nuw %struct.Piece, ptr %5663, i64 %5676, i32 35
  %5678 = load <8 x double>, ptr %5677, align 64, !tbaa !26
  %5679 = fcmp olt <8 x double> %5675, %5678
  %5680 = select <8 x i1> %5679, <8 x double> %5675, <8 x double> %5678
  %5681 = add nuw nsw i64 %5669, 2
  %5682 = add i64 %5671, 2
  %5683 = icmp eq i64 %5682, %5667
  br i1 %5683, label %5684, label %5668, !llvm.loop !139

5684:                                             ; preds = %5668, %5662
  %5685 = phi <8 x double> [ poison, %5662 ], [ %5680, %5668 ]
  %5686 = phi i64 [ 0, %5662 ], [ %5681, %5668 ]
  %5687 = phi <8 x double> [ splat (double 1.000000e+09), %5662 ], [ %5680, %5668 ]
  %5688 = icmp eq i64 %5664, 0
  br i1 %5688, label %5694, label %5689

5689:                                             ; preds = %5684
  %5690 = getelementptr inbounds nuw %struct.Piece, ptr %5663, i64 %5686, i32 35
  %5691 = load <8 x double>, ptr %5690, align 64, !tbaa !26
  %5692 = fcmp olt <8 x double> %5687, %5691
  %5693 = select <8 x i1> %5692, <8 x double> %5687, <8 x double> %5691
  br label %5694

5694:                                             ; preds = %5689, %5684, %5652
  %5695 = phi <8 x double> [ splat (double 1.000000e+09), %5652 ], [ %5685, %5684 ], [ %5693, %5689 ]
  %5696 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %5697 = select <8 x i1> %4404, <8 x double> %5696, <8 x double> %5695
  store <8 x double> %5697, ptr %235, align 64, !tbaa !26
  %5698 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %5699 = fcmp une <8 x double> %5698, zeroinitializer
  %5700 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5701 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %5702 = fsub <8 x double> %5700, %5701
  %5703 = fcmp une <8 x double> %5698, splat (double 1.000000e+00)
  %5704 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %5705 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %5706 = fsub <8 x double> %5704, %5705
  %5707 = select <8 x i1> %5703, <8 x double> splat (double -1.000000e+00), <8 x double> %5706
  %5708 = fcmp une <8 x double> %5698, splat (double 2.000000e+00)
  %5709 = fsub <8 x double> %5697, %5705
  %5710 = select <8 x i1> %5708, <8 x double> %5707, <8 x double> %5709
  %5711 = fcmp une <8 x double> %5698, splat (double 3.000000e+00)
  %5712 = fsub <8 x double> %5702, %5705
  %5713 = select <8 x i1> %5711, <8 x double> %5710, <8 x double> %5712
  %5714 = fcmp une <8 x double> %5698, splat (double 4.000000e+00)
  %5715 = fsub <8 x double> %5705, %5702
  %5716 = select <8 x i1> %5714, <8 x double> %5713, <8 x double> %5715
  %5717 = fcmp oge <8 x double> %5716, splat (double 0xBEB0C6F7A0B5ED8D)
  %5718 = select <8 x i1> %5717, <8 x i1> %5699, <8 x i1> zeroinitializer
  %5719 = select <8 x i1> %5718, <8 x i64> %4344, <8 x i64> zeroinitializer
  %5720 = xor <8 x i64> %5719, splat (i64 -1)
  %5721 = and <8 x i64> %5659, %5720
  %5722 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %5723 = icmp ne <8 x i64> %5721, zeroinitializer
  %5724 = select <8 x i1> %5699, <8 x i1> %5723, <8 x i1> zeroinitializer
  %5725 = select <8 x i1> %5724, <8 x double> splat (double 2.000000e+00), <8 x double> %5722
  store <8 x double> %5725, ptr %148, align 64, !tbaa !26
  %5726 = or <8 x i64> %5719, %5659
  %5727 = load <8 x double>, ptr %240, align 64, !tbaa !26
  %5728 = fadd <8 x double> %5727, splat (double 1.000000e+00)
  %5729 = icmp eq <8 x i64> %5726, zeroinitializer
  %5730 = select <8 x i1> %5729, <8 x double> %5727, <8 x double> %5728
  store <8 x double> %5730, ptr %240, align 64, !tbaa !26
  %5731 = xor <8 x i64> %5726, %4344
  %5732 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %5733 = fcmp oeq <8 x double> %5732, zeroinitializer
  %5734 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %5735 = fcmp oeq <8 x double> %5734, zeroinitializer
  %5736 = select <8 x i1> %5735, <8 x i1> %5733, <8 x i1> zeroinitializer
  %5737 = select <8 x i1> %5736, <8 x i64> %5731, <8 x i64> zeroinitializer
  %5738 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %5739 = fmul <8 x double> %5738, splat (double 5.000000e-01)
  %5740 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %5741 = fadd <8 x double> %5740, %5739
  %5742 = fadd <8 x double> %5741, splat (double -4.000000e-03)
  %5743 = fcmp ult <8 x double> %5704, %5742
  %5744 = fsub <8 x double> %5740, %5739
  %5745 = fadd <8 x double> %5744, splat (double 4.000000e-03)
  %5746 = fcmp ole <8 x double> %5704, %5745
  %5747 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %5748 = select <8 x i1> %5746, <8 x i64> splat (i64 -1), <8 x i64> %5747
  %5749 = select <8 x i1> %5743, <8 x i64> %5748, <8 x i64> zeroinitializer
  %5750 = xor <8 x i64> %5749, %5747
  %5751 = and <8 x i64> %5750, %5737
  %5752 = and <8 x i64> %5749, %5737
  %5753 = xor <8 x i64> %5737, splat (i64 -1)
  %5754 = and <8 x i64> %5747, %5753
  %5755 = or <8 x i64> %5752, %5754
  store <8 x i64> %5755, ptr %165, align 64, !tbaa !26
  %5756 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %5757 = or <8 x i64> %5751, %5756
  store <8 x i64> %5757, ptr %175, align 64, !tbaa !26
  %5758 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5726)
  %5759 = icmp eq i64 %5758, 0
  br i1 %5759, label %5794, label %5760

5760:                                             ; preds = %5694
  %5761 = extractelement <8 x i64> %5726, i64 0
  %5762 = icmp eq i64 %5761, 0
  br i1 %5762, label %5764, label %5763

5763:                                             ; preds = %5760
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %5764

5764:                                             ; preds = %5763, %5760
  %5765 = extractelement <8 x i64> %5726, i64 1
  %5766 = icmp eq i64 %5765, 0
  br i1 %5766, label %5768, label %5767

5767:                                             ; preds = %5764
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %5768

5768:                                             ; preds = %5767, %5764
  %5769 = extractelement <8 x i64> %5726, i64 2
  %5770 = icmp eq i64 %5769, 0
  br i1 %5770, label %5772, label %5771

5771:                                             ; preds = %5768
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %5772

5772:                                             ; preds = %5771, %5768
  %5773 = extractelement <8 x i64> %5726, i64 3
  %5774 = icmp eq i64 %5773, 0
  br i1 %5774, label %5776, label %5775

5775:                                             ; preds = %5772
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %5776

5776:                                             ; preds = %5775, %5772
  %5777 = extractelement <8 x i64> %5726, i64 4
  %5778 = icmp eq i64 %5777, 0
  br i1 %5778, label %5780, label %5779

5779:                                             ; preds = %5776
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %5780

5780:                                             ; preds = %5779, %5776
  %5781 = extractelement <8 x i64> %5726, i64 5
  %5782 = icmp eq i64 %5781, 0
  br i1 %5782, label %5784, label %5783

5783:                                             ; preds = %5780
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %5784

5784:                                             ; preds = %5783, %5780
  %5785 = extractelement <8 x i64> %5726, i64 6
  %5786 = icmp eq i64 %5785, 0
  br i1 %5786, label %5788, label %5787

5787:                                             ; preds = %5784
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %5788

5788:                                             ; preds = %5787, %5784
  %5789 = extractelement <8 x i64> %5726, i64 7
  %5790 = icmp eq i64 %5789, 0
  br i1 %5790, label %5792, label %5791

5791:                                             ; preds = %5788
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %5792

5792:                                             ; preds = %5791, %5788
  %5793 = load <8 x double>, ptr %148, align 64, !tbaa !26
  br label %5794

5794:                                             ; preds = %5792, %5694
  %5795 = phi <8 x double> [ %5793, %5792 ], [ %5725, %5694 ]
  %5796 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %5797 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %5798 = fadd <8 x double> %5797, splat (double -1.000000e+00)
  %5799 = fcmp oge <8 x double> %5796, %5798
  %5800 = select <8 x i1> %5799, <8 x i64> %4344, <8 x i64> zeroinitializer
  %5801 = icmp eq <8 x i64> %5800, zeroinitializer
  %5802 = select <8 x i1> %5801, <8 x double> %5795, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5802, ptr %148, align 64, !tbaa !26
  %5803 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5800)
  %5804 = icmp eq i64 %5803, 0
  br i1 %5804, label %550, label %5805

5805:                                             ; preds = %5794
  %5806 = extractelement <8 x i64> %5800, i64 0
  %5807 = icmp eq i64 %5806, 0
  br i1 %5807, label %5809, label %5808

5808:                                             ; preds = %5805
  store double 1.000000e+00, ptr %140, align 8, !tbaa !44
  br label %5809

5809:                                             ; preds = %5808, %5805
  %5810 = extractelement <8 x i64> %5800, i64 1
  %5811 = icmp eq i64 %5810, 0
  br i1 %5811, label %5813, label %5812

5812:                                             ; preds = %5809
  store double 1.000000e+00, ptr %278, align 8, !tbaa !44
  br label %5813

5813:                                             ; preds = %5812, %5809
  %5814 = extractelement <8 x i64> %5800, i64 2
  %5815 = icmp eq i64 %5814, 0
  br i1 %5815, label %5817, label %5816

5816:                                             ; preds = %5813
  store double 1.000000e+00, ptr %279, align 8, !tbaa !44
  br label %5817

5817:                                             ; preds = %5816, %5813
  %5818 = extractelement <8 x i64> %5800, i64 3
  %5819 = icmp eq i64 %5818, 0
  br i1 %5819, label %5821, label %5820

5820:                                             ; preds = %5817
  store double 1.000000e+00, ptr %280, align 8, !tbaa !44
  br label %5821

5821:                                             ; preds = %5820, %5817
  %5822 = extractelement <8 x i64> %5800, i64 4
  %5823 = icmp eq i64 %5822, 0
  br i1 %5823, label %5825, label %5824

5824:                                             ; preds = %5821
  store double 1.000000e+00, ptr %281, align 8, !tbaa !44
  br label %5825

5825:                                             ; preds = %5824, %5821
  %5826 = extractelement <8 x i64> %5800, i64 5
  %5827 = icmp eq i64 %5826, 0
  br i1 %5827, label %5829, label %5828

5828:                                             ; preds = %5825
  store double 1.000000e+00, ptr %282, align 8, !tbaa !44
  br label %5829

5829:                                             ; preds = %5828, %5825
  %5830 = extractelement <8 x i64> %5800, i64 6
  %5831 = icmp eq i64 %5830, 0
  br i1 %5831, label %5833, label %5832

5832:                                             ; preds = %5829
  store double 1.000000e+00, ptr %283, align 8, !tbaa !44
  br label %5833

5833:                                             ; preds = %5832, %5829
  %5834 = extractelement <8 x i64> %5800, i64 7
  %5835 = icmp eq i64 %5834, 0
  br i1 %5835, label %550, label %5836

5836:                                             ; preds = %5833
  store double 1.000000e+00, ptr %284, align 8, !tbaa !44
  br label %550

5837:                                             ; preds = %550, %555, %131
  %5838 = phi i64 [ 0, %131 ], [ 1, %555 ], [ 0, %550 ]
  ret i64 %5838
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %6 = sext i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #6
  %8 = getelementptr inbounds i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  %9 = load i64, ptr %5, align 8, !tbaa !27
  %10 = add nsw i64 %9, 1
  store i64 %10, ptr %5, align 8, !tbaa !27
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 6208
  %12 = load ptr, ptr %11, align 64, !tbaa !39
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %14 = load <8 x double>, ptr %13, align 64, !tbaa !26
  %15 = getelementptr inbounds nuw i8, ptr %12, i64 64
  store <8 x double> %14, ptr %12, align 64, !tbaa !26
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %17 = load <8 x double>, ptr %16, align 64, !tbaa !26
  %18 = getelementptr inbounds nuw i8, ptr %12, i64 128
  store <8 x double> %17, ptr %15, align 64, !tbaa !26
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %21 = load <8 x double>, ptr %20, align 64, !tbaa !26
  %22 = getelementptr inbounds nuw i8, ptr %12, i64 192
  store <8 x double> %21, ptr %18, align 64, !tbaa !26
  %23 = load <8 x double>, ptr %19, align 64, !tbaa !26
  %24 = getelementptr inbounds nuw i8, ptr %12, i64 256
  store <8 x double> %23, ptr %22, align 64, !tbaa !26
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %26 = load i64, ptr %25, align 8, !tbaa !20
  %27 = icmp sgt i64 %26, 0
  br i1 %27, label %28, label %30

28:                                               ; preds = %3
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 6216
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
  %46 = getelementptr inbounds nuw i8, ptr %0, i64 3136
  %47 = load <8 x double>, ptr %46, align 64, !tbaa !26
  %48 = getelementptr inbounds nuw i8, ptr %31, i64 64
  store <8 x double> %47, ptr %31, align 64, !tbaa !26
  %49 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %50 = load <8 x double>, ptr %49, align 64, !tbaa !26
  %51 = getelementptr inbounds nuw i8, ptr %31, i64 128
  store <8 x double> %50, ptr %48, align 64, !tbaa !26
  %52 = load <8 x double>, ptr %20, align 64, !tbaa !26
  %53 = getelementptr inbounds nuw i8, ptr %0, i64 3008
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
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 2392
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
  %177 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %179 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %181 = load ptr, ptr %180, align 8
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %185 = getelementptr inbounds nuw i8, ptr %0, i64 6080
  %186 = load ptr, ptr %11, align 64
  %187 = icmp ult ptr %186, %24
  %188 = getelementptr inbounds nuw i8, ptr %0, i64 2368
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
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !156
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
  store double 0.000000e+00, ptr %20, align 8, !tbaa !44
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !166
  %23 = mul i64 %3, 296
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr double, ptr %0, i64 %6
  br label %42

26:                                               ; preds = %42
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %28 = load i64, ptr %27, align 8, !tbaa !20
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %62

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = load ptr, ptr %36, align 8, !tbaa !167
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !168
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !169
  br label %161

42:                                               ; preds = %48, %4
  %43 = phi i64 [ 0, %4 ], [ %61, %48 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !44
  %46 = getelementptr <8 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !44
  %47 = icmp eq i64 %43, 36
  br i1 %47, label %26, label %48, !llvm.loop !170

48:                                               ; preds = %42
  %49 = or disjoint i64 %43, 1
  %50 = getelementptr double, ptr %24, i64 %49
  %51 = load double, ptr %50, align 8, !tbaa !44
  %52 = getelementptr <8 x double>, ptr %25, i64 %49
  store double %51, ptr %52, align 8, !tbaa !44
  %53 = or disjoint i64 %43, 2
  %54 = getelementptr double, ptr %24, i64 %53
  %55 = load double, ptr %54, align 8, !tbaa !44
  %56 = getelementptr <8 x double>, ptr %25, i64 %53
  store double %55, ptr %56, align 8, !tbaa !44
  %57 = or disjoint i64 %43, 3
  %58 = getelementptr double, ptr %24, i64 %57
  %59 = load double, ptr %58, align 8, !tbaa !44
  %60 = getelementptr <8 x double>, ptr %25, i64 %57
  store double %59, ptr %60, align 8, !tbaa !44
  %61 = add nuw nsw i64 %43, 4
  br label %42

62:                                               ; preds = %557, %26
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %67 = getelementptr inbounds double, ptr %66, i64 %6
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %69 = getelementptr inbounds double, ptr %68, i64 %6
  %70 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %71 = getelementptr inbounds double, ptr %70, i64 %6
  %72 = getelementptr double, ptr %63, i64 %6
  %73 = getelementptr i8, ptr %72, i64 256
  store double 0.000000e+00, ptr %73, align 8, !tbaa !44
  %74 = getelementptr i8, ptr %72, i64 320
  store double 0.000000e+00, ptr %74, align 8, !tbaa !44
  %75 = load double, ptr %67, align 8, !tbaa !44
  store double %75, ptr %72, align 8, !tbaa !44
  %76 = load double, ptr %69, align 8, !tbaa !44
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 2688
  %78 = getelementptr inbounds double, ptr %77, i64 %6
  store double %76, ptr %78, align 8, !tbaa !44
  %79 = load double, ptr %71, align 8, !tbaa !44
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %81 = getelementptr inbounds double, ptr %80, i64 %6
  store double %79, ptr %81, align 8, !tbaa !44
  %82 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %83 = getelementptr inbounds double, ptr %82, i64 %6
  store double %79, ptr %83, align 8, !tbaa !44
  %84 = getelementptr double, ptr %64, i64 %6
  %85 = getelementptr i8, ptr %84, i64 256
  store double 0.000000e+00, ptr %85, align 8, !tbaa !44
  %86 = getelementptr i8, ptr %84, i64 320
  store double 0.000000e+00, ptr %86, align 8, !tbaa !44
  store double %75, ptr %84, align 8, !tbaa !44
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %88 = getelementptr inbounds double, ptr %87, i64 %6
  store double %76, ptr %88, align 8, !tbaa !44
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %90 = getelementptr inbounds double, ptr %89, i64 %6
  store double %79, ptr %90, align 8, !tbaa !44
  %91 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %92 = getelementptr inbounds double, ptr %91, i64 %6
  store double %79, ptr %92, align 8, !tbaa !44
  %93 = getelementptr double, ptr %65, i64 %6
  %94 = getelementptr i8, ptr %93, i64 256
  store double 0.000000e+00, ptr %94, align 8, !tbaa !44
  %95 = getelementptr i8, ptr %93, i64 320
  store double 0.000000e+00, ptr %95, align 8, !tbaa !44
  store double %75, ptr %93, align 8, !tbaa !44
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 3456
  %97 = getelementptr inbounds double, ptr %96, i64 %6
  store double %76, ptr %97, align 8, !tbaa !44
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %99 = getelementptr inbounds double, ptr %98, i64 %6
  store double %79, ptr %99, align 8, !tbaa !44
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %101 = getelementptr inbounds double, ptr %100, i64 %6
  store double %79, ptr %101, align 8, !tbaa !44
  %102 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %103 = getelementptr inbounds double, ptr %102, i64 %6
  %104 = load double, ptr %103, align 8, !tbaa !44
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %106 = getelementptr inbounds double, ptr %105, i64 %6
  store double %104, ptr %106, align 8, !tbaa !44
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %108 = getelementptr inbounds double, ptr %107, i64 %6
  store double %104, ptr %108, align 8, !tbaa !44
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %110 = getelementptr inbounds double, ptr %109, i64 %6
  store double 1.000000e+09, ptr %110, align 8, !tbaa !44
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %112 = getelementptr inbounds double, ptr %111, i64 %6
  store double 0.000000e+00, ptr %112, align 8, !tbaa !44
  %113 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %114 = getelementptr inbounds double, ptr %113, i64 %6
  %115 = load double, ptr %114, align 8, !tbaa !44
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %117 = getelementptr inbounds double, ptr %116, i64 %6
  store double %115, ptr %117, align 8, !tbaa !44
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %119 = getelementptr inbounds double, ptr %118, i64 %6
  store double %115, ptr %119, align 8, !tbaa !44
  %120 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %121 = getelementptr inbounds double, ptr %120, i64 %6
  %122 = load double, ptr %121, align 8, !tbaa !44
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %124 = getelementptr inbounds double, ptr %123, i64 %6
  store double %122, ptr %124, align 8, !tbaa !44
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
  %150 = getelementptr inbounds double, ptr %137, i64 %6
  store double 0.000000e+00, ptr %150, align 8, !tbaa !44
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %152 = getelementptr inbounds i64, ptr %151, i64 %6
  store i64 0, ptr %152, align 8, !tbaa !30
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %154 = getelementptr inbounds i64, ptr %153, i64 %6
  store i64 0, ptr %154, align 8, !tbaa !30
  %155 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %156 = getelementptr inbounds i64, ptr %155, i64 %6
  store i64 -1, ptr %156, align 8, !tbaa !30
  %157 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %158 = getelementptr inbounds i64, ptr %157, i64 %6
  store i64 -1, ptr %158, align 8, !tbaa !30
  %159 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %160 = getelementptr inbounds i64, ptr %159, i64 %6
  store i64 -1, ptr %160, align 8, !tbaa !30
  ret void

161:                                              ; preds = %30, %557
  %162 = phi i64 [ 0, %30 ], [ %558, %557 ]
  %163 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %162
  %164 = load i64, ptr %33, align 16, !tbaa !21
  %165 = load i64, ptr %34, align 8, !tbaa !22
  %166 = load i64, ptr %35, align 64, !tbaa !16
  %167 = mul nsw i64 %166, %3
  %168 = add nsw i64 %167, %162
  %169 = getelementptr inbounds nuw i8, ptr %163, i64 8512
  %170 = load i64, ptr %169, align 64, !tbaa !31
  %171 = mul i64 %168, 368
  %172 = getelementptr i8, ptr %37, i64 %171
  %173 = getelementptr double, ptr %163, i64 %6
  br label %203

174:                                              ; preds = %203
  %175 = icmp eq i64 %170, 0
  %176 = getelementptr inbounds i64, ptr %41, i64 %168
  %177 = load i64, ptr %176, align 8, !tbaa !30
  %178 = mul nsw i64 %164, 3
  %179 = add nsw i64 %164, 1
  %180 = select i1 %175, i64 0, i64 2
  %181 = shl i64 %179, %180
  %182 = add nsw i64 %181, %178
  %183 = mul nsw i64 %177, %182
  %184 = getelementptr inbounds double, ptr %39, i64 %183
  %185 = icmp sgt i64 %164, 0
  br i1 %185, label %186, label %227

186:                                              ; preds = %174
  %187 = getelementptr inbounds nuw i8, ptr %163, i64 8608
  %188 = load ptr, ptr %187, align 32, !tbaa !74
  %189 = getelementptr double, ptr %188, i64 %6
  %190 = getelementptr double, ptr %184, i64 %164
  %191 = getelementptr inbounds nuw i8, ptr %163, i64 8616
  %192 = load ptr, ptr %191, align 8, !tbaa !50
  %193 = getelementptr double, ptr %192, i64 %6
  %194 = shl i64 %164, 4
  %195 = getelementptr i8, ptr %184, i64 %194
  %196 = getelementptr inbounds nuw i8, ptr %163, i64 8624
  %197 = load ptr, ptr %196, align 16, !tbaa !141
  %198 = getelementptr double, ptr %197, i64 %6
  %199 = and i64 %164, 1
  %200 = icmp eq i64 %164, 1
  br i1 %200, label %214, label %201

201:                                              ; preds = %186
  %202 = and i64 %164, 9223372036854775806
  br label %242

203:                                              ; preds = %203, %161
  %204 = phi i64 [ 0, %161 ], [ %212, %203 ]
  %205 = getelementptr double, ptr %172, i64 %204
  %206 = load double, ptr %205, align 8, !tbaa !44
  %207 = getelementptr <8 x double>, ptr %173, i64 %204
  store double %206, ptr %207, align 8, !tbaa !44
  %208 = or disjoint i64 %204, 1
  %209 = getelementptr double, ptr %172, i64 %208
  %210 = load double, ptr %209, align 8, !tbaa !44
  %211 = getelementptr <8 x double>, ptr %173, i64 %208
  store double %210, ptr %211, align 8, !tbaa !44
  %212 = add nuw nsw i64 %204, 2
  %213 = icmp eq i64 %212, 46
  br i1 %213, label %174, label %203, !llvm.loop !171

214:                                              ; preds = %242, %186
  %215 = phi i64 [ 0, %186 ], [ %264, %242 ]
  %216 = icmp eq i64 %199, 0
  br i1 %216, label %227, label %217

217:                                              ; preds = %214
  %218 = getelementptr inbounds nuw double, ptr %184, i64 %215
  %219 = load double, ptr %218, align 8, !tbaa !44
  %220 = getelementptr <8 x double>, ptr %189, i64 %215
  store double %219, ptr %220, align 8, !tbaa !44
  %221 = getelementptr double, ptr %190, i64 %215
  %222 = load double, ptr %221, align 8, !tbaa !44
  %223 = getelementptr <8 x double>, ptr %193, i64 %215
  store double %222, ptr %223, align 8, !tbaa !44
  %224 = getelementptr double, ptr %195, i64 %215
  %225 = load double, ptr %224, align 8, !tbaa !44
  %226 = getelementptr <8 x double>, ptr %198, i64 %215
  store double %225, ptr %226, align 8, !tbaa !44
  br label %227

227:                                              ; preds = %217, %214, %174
  %228 = getelementptr inbounds nuw i8, ptr %163, i64 960
  %229 = getelementptr inbounds double, ptr %228, i64 %6
  %230 = load double, ptr %229, align 8, !tbaa !44
  %231 = load double, ptr %173, align 8, !tbaa !44
  %232 = icmp sgt i64 %181, 0
  br i1 %232, label %233, label %279

233:                                              ; preds = %227
  %234 = getelementptr double, ptr %184, i64 %178
  %235 = getelementptr inbounds nuw i8, ptr %163, i64 8632
  %236 = load ptr, ptr %235, align 8, !tbaa !36
  %237 = getelementptr double, ptr %236, i64 %6
  %238 = and i64 %181, 3
  %239 = icmp ult i64 %181, 4
  br i1 %239, label %267, label %240

240:                                              ; preds = %233
  %241 = and i64 %181, 9223372036854775804
  br label %288

242:                                              ; preds = %242, %201
  %243 = phi i64 [ 0, %201 ], [ %264, %242 ]
  %244 = phi i64 [ 0, %201 ], [ %265, %242 ]
  %245 = getelementptr inbounds nuw double, ptr %184, i64 %243
  %246 = load double, ptr %245, align 8, !tbaa !44
  %247 = getelementptr <8 x double>, ptr %189, i64 %243
  store double %246, ptr %247, align 8, !tbaa !44
  %248 = getelementptr double, ptr %190, i64 %243
  %249 = load double, ptr %248, align 8, !tbaa !44
  %250 = getelementptr <8 x double>, ptr %193, i64 %243
  store double %249, ptr %250, align 8, !tbaa !44
  %251 = getelementptr double, ptr %195, i64 %243
  %252 = load double, ptr %251, align 8, !tbaa !44
  %253 = getelementptr <8 x double>, ptr %198, i64 %243
  store double %252, ptr %253, align 8, !tbaa !44
  %254 = or disjoint i64 %243, 1
  %255 = getelementptr inbounds nuw double, ptr %184, i64 %254
  %256 = load double, ptr %255, align 8, !tbaa !44
  %257 = getelementptr <8 x double>, ptr %189, i64 %254
  store double %256, ptr %257, align 8, !tbaa !44
  %258 = getelementptr double, ptr %190, i64 %254
  %259 = load double, ptr %258, align 8, !tbaa !44
  %260 = getelementptr <8 x double>, ptr %193, i64 %254
  store double %259, ptr %260, align 8, !tbaa !44
  %261 = getelementptr double, ptr %195, i64 %254
  %262 = load double, ptr %261, align 8, !tbaa !44
  %263 = getelementptr <8 x double>, ptr %198, i64 %254
  store double %262, ptr %263, align 8, !tbaa !44
  %264 = add nuw nsw i64 %243, 2
  %265 = add i64 %244, 2
  %266 = icmp eq i64 %265, %202
  br i1 %266, label %214, label %242, !llvm.loop !172

267:                                              ; preds = %288, %233
  %268 = phi i64 [ 0, %233 ], [ %306, %288 ]
  %269 = icmp eq i64 %238, 0
  br i1 %269, label %279, label %270

270:                                              ; preds = %267, %270
  %271 = phi i64 [ %276, %270 ], [ %268, %267 ]
  %272 = phi i64 [ %277, %270 ], [ 0, %267 ]
  %273 = getelementptr double, ptr %234, i64 %271
  %274 = load double, ptr %273, align 8, !tbaa !44
  %275 = getelementptr <8 x double>, ptr %237, i64 %271
  store double %274, ptr %275, align 8, !tbaa !44
  %276 = add nuw nsw i64 %271, 1
  %277 = add i64 %272, 1
  %278 = icmp eq i64 %277, %238
  br i1 %278, label %279, label %270, !llvm.loop !173

279:                                              ; preds = %267, %270, %227
  %280 = icmp ne i64 %170, 0
  %281 = icmp sgt i64 %164, -1
  %282 = select i1 %280, i1 %281, i1 false
  br i1 %282, label %283, label %309

283:                                              ; preds = %279
  %284 = fdiv double 1.000000e+00, %231
  %285 = getelementptr inbounds nuw i8, ptr %163, i64 8632
  %286 = load ptr, ptr %285, align 8, !tbaa !36
  %287 = getelementptr double, ptr %286, i64 %6
  br label %445

288:                                              ; preds = %288, %240
  %289 = phi i64 [ 0, %240 ], [ %306, %288 ]
  %290 = phi i64 [ 0, %240 ], [ %307, %288 ]
  %291 = getelementptr double, ptr %234, i64 %289
  %292 = load double, ptr %291, align 8, !tbaa !44
  %293 = getelementptr <8 x double>, ptr %237, i64 %289
  store double %292, ptr %293, align 8, !tbaa !44
  %294 = or disjoint i64 %289, 1
  %295 = getelementptr double, ptr %234, i64 %294
  %296 = load double, ptr %295, align 8, !tbaa !44
  %297 = getelementptr <8 x double>, ptr %237, i64 %294
  store double %296, ptr %297, align 8, !tbaa !44
  %298 = or disjoint i64 %289, 2
  %299 = getelementptr double, ptr %234, i64 %298
  %300 = load double, ptr %299, align 8, !tbaa !44
  %301 = getelementptr <8 x double>, ptr %237, i64 %298
  store double %300, ptr %301, align 8, !tbaa !44
  %302 = or disjoint i64 %289, 3
  %303 = getelementptr double, ptr %234, i64 %302
  %304 = load double, ptr %303, align 8, !tbaa !44
  %305 = getelementptr <8 x double>, ptr %237, i64 %302
  store double %304, ptr %305, align 8, !tbaa !44
  %306 = add nuw nsw i64 %289, 4
  %307 = add i64 %290, 4
  %308 = icmp eq i64 %307, %241
  br i1 %308, label %267, label %288, !llvm.loop !174

309:                                              ; preds = %445, %279
  %310 = getelementptr inbounds nuw i8, ptr %163, i64 2560
  %311 = getelementptr inbounds double, ptr %310, i64 %6
  %312 = load double, ptr %311, align 8, !tbaa !44
  %313 = getelementptr inbounds nuw i8, ptr %163, i64 2624
  %314 = getelementptr inbounds double, ptr %313, i64 %6
  %315 = load double, ptr %314, align 8, !tbaa !44
  %316 = getelementptr inbounds nuw i8, ptr %163, i64 2688
  %317 = getelementptr inbounds double, ptr %316, i64 %6
  %318 = load double, ptr %317, align 8, !tbaa !44
  %319 = getelementptr inbounds nuw i8, ptr %163, i64 2752
  %320 = getelementptr inbounds double, ptr %319, i64 %6
  %321 = load double, ptr %320, align 8, !tbaa !44
  %322 = tail call double @llvm.fmuladd.f64(double %231, double %321, double %318)
  %323 = tail call double @llvm.fmuladd.f64(double %231, double %322, double %315)
  %324 = tail call double @llvm.fmuladd.f64(double %231, double %323, double %312)
  %325 = getelementptr inbounds nuw i8, ptr %163, i64 832
  %326 = getelementptr inbounds double, ptr %325, i64 %6
  %327 = load double, ptr %326, align 8, !tbaa !44
  %328 = getelementptr inbounds nuw i8, ptr %163, i64 1408
  %329 = getelementptr inbounds double, ptr %328, i64 %6
  %330 = load double, ptr %329, align 8, !tbaa !44
  %331 = getelementptr inbounds nuw i8, ptr %163, i64 1536
  %332 = getelementptr inbounds double, ptr %331, i64 %6
  %333 = load double, ptr %332, align 8, !tbaa !44
  %334 = fsub double %330, %333
  %335 = fmul double %327, %334
  %336 = getelementptr inbounds nuw i8, ptr %163, i64 2944
  %337 = getelementptr inbounds nuw i8, ptr %163, i64 3840
  %338 = getelementptr inbounds nuw i8, ptr %163, i64 4736
  %339 = getelementptr inbounds nuw i8, ptr %163, i64 896
  %340 = getelementptr inbounds double, ptr %339, i64 %6
  %341 = getelementptr inbounds nuw i8, ptr %163, i64 1024
  %342 = getelementptr inbounds double, ptr %341, i64 %6
  %343 = getelementptr double, ptr %336, i64 %6
  %344 = getelementptr i8, ptr %343, i64 320
  store double 0.000000e+00, ptr %344, align 8, !tbaa !44
  %345 = getelementptr i8, ptr %343, i64 384
  store double 0.000000e+00, ptr %345, align 8, !tbaa !44
  %346 = getelementptr i8, ptr %343, i64 448
  store double 0.000000e+00, ptr %346, align 8, !tbaa !44
  %347 = getelementptr i8, ptr %343, i64 512
  store double 0.000000e+00, ptr %347, align 8, !tbaa !44
  %348 = getelementptr i8, ptr %343, i64 576
  store double 0.000000e+00, ptr %348, align 8, !tbaa !44
  %349 = getelementptr i8, ptr %343, i64 704
  store double 0.000000e+00, ptr %349, align 8, !tbaa !44
  %350 = getelementptr i8, ptr %343, i64 768
  store double 0.000000e+00, ptr %350, align 8, !tbaa !44
  store double %231, ptr %343, align 8, !tbaa !44
  %351 = getelementptr inbounds nuw i8, ptr %163, i64 3008
  %352 = getelementptr inbounds double, ptr %351, i64 %6
  store double %330, ptr %352, align 8, !tbaa !44
  %353 = load double, ptr %340, align 8, !tbaa !44
  %354 = getelementptr inbounds nuw i8, ptr %163, i64 3072
  %355 = getelementptr inbounds double, ptr %354, i64 %6
  store double %353, ptr %355, align 8, !tbaa !44
  %356 = getelementptr inbounds nuw i8, ptr %163, i64 3136
  %357 = getelementptr inbounds double, ptr %356, i64 %6
  store double %335, ptr %357, align 8, !tbaa !44
  %358 = getelementptr inbounds nuw i8, ptr %163, i64 3584
  %359 = getelementptr inbounds double, ptr %358, i64 %6
  store double %230, ptr %359, align 8, !tbaa !44
  %360 = load double, ptr %342, align 8, !tbaa !44
  %361 = getelementptr inbounds nuw i8, ptr %163, i64 3200
  %362 = getelementptr inbounds double, ptr %361, i64 %6
  store double %360, ptr %362, align 8, !tbaa !44
  %363 = getelementptr inbounds nuw i8, ptr %163, i64 3776
  %364 = getelementptr inbounds double, ptr %363, i64 %6
  store double %324, ptr %364, align 8, !tbaa !44
  %365 = getelementptr double, ptr %337, i64 %6
  %366 = getelementptr i8, ptr %365, i64 320
  store double 0.000000e+00, ptr %366, align 8, !tbaa !44
  %367 = getelementptr i8, ptr %365, i64 384
  store double 0.000000e+00, ptr %367, align 8, !tbaa !44
  %368 = getelementptr i8, ptr %365, i64 448
  store double 0.000000e+00, ptr %368, align 8, !tbaa !44
  %369 = getelementptr i8, ptr %365, i64 512
  store double 0.000000e+00, ptr %369, align 8, !tbaa !44
  %370 = getelementptr i8, ptr %365, i64 576
  store double 0.000000e+00, ptr %370, align 8, !tbaa !44
  %371 = getelementptr i8, ptr %365, i64 704
  store double 0.000000e+00, ptr %371, align 8, !tbaa !44
  %372 = getelementptr i8, ptr %365, i64 768
  store double 0.000000e+00, ptr %372, align 8, !tbaa !44
  store double %231, ptr %365, align 8, !tbaa !44
  %373 = getelementptr inbounds nuw i8, ptr %163, i64 3904
  %374 = getelementptr inbounds double, ptr %373, i64 %6
  store double %330, ptr %374, align 8, !tbaa !44
  %375 = getelementptr inbounds nuw i8, ptr %163, i64 3968
  %376 = getelementptr inbounds double, ptr %375, i64 %6
  store double %353, ptr %376, align 8, !tbaa !44
  %377 = getelementptr inbounds nuw i8, ptr %163, i64 4032
  %378 = getelementptr inbounds double, ptr %377, i64 %6
  store double %335, ptr %378, align 8, !tbaa !44
  %379 = getelementptr inbounds nuw i8, ptr %163, i64 4480
  %380 = getelementptr inbounds double, ptr %379, i64 %6
  store double %230, ptr %380, align 8, !tbaa !44
  %381 = getelementptr inbounds nuw i8, ptr %163, i64 4096
  %382 = getelementptr inbounds double, ptr %381, i64 %6
  store double %360, ptr %382, align 8, !tbaa !44
  %383 = getelementptr inbounds nuw i8, ptr %163, i64 4672
  %384 = getelementptr inbounds double, ptr %383, i64 %6
  store double %324, ptr %384, align 8, !tbaa !44
  %385 = getelementptr double, ptr %338, i64 %6
  %386 = getelementptr i8, ptr %385, i64 320
  store double 0.000000e+00, ptr %386, align 8, !tbaa !44
  %387 = getelementptr i8, ptr %385, i64 384
  store double 0.000000e+00, ptr %387, align 8, !tbaa !44
  %388 = getelementptr i8, ptr %385, i64 448
  store double 0.000000e+00, ptr %388, align 8, !tbaa !44
  %389 = getelementptr i8, ptr %385, i64 512
  store double 0.000000e+00, ptr %389, align 8, !tbaa !44
  %390 = getelementptr i8, ptr %385, i64 576
  store double 0.000000e+00, ptr %390, align 8, !tbaa !44
  %391 = getelementptr i8, ptr %385, i64 704
  store double 0.000000e+00, ptr %391, align 8, !tbaa !44
  %392 = getelementptr i8, ptr %385, i64 768
  store double 0.000000e+00, ptr %392, align 8, !tbaa !44
  store double %231, ptr %385, align 8, !tbaa !44
  %393 = load double, ptr %329, align 8, !tbaa !44
  %394 = getelementptr inbounds nuw i8, ptr %163, i64 4800
  %395 = getelementptr inbounds double, ptr %394, i64 %6
  store double %393, ptr %395, align 8, !tbaa !44
  %396 = getelementptr inbounds nuw i8, ptr %163, i64 4864
  %397 = getelementptr inbounds double, ptr %396, i64 %6
  store double %353, ptr %397, align 8, !tbaa !44
  %398 = getelementptr inbounds nuw i8, ptr %163, i64 4928
  %399 = getelementptr inbounds double, ptr %398, i64 %6
  store double %335, ptr %399, align 8, !tbaa !44
  %400 = getelementptr inbounds nuw i8, ptr %163, i64 5376
  %401 = getelementptr inbounds double, ptr %400, i64 %6
  store double %230, ptr %401, align 8, !tbaa !44
  %402 = getelementptr inbounds nuw i8, ptr %163, i64 4992
  %403 = getelementptr inbounds double, ptr %402, i64 %6
  store double %360, ptr %403, align 8, !tbaa !44
  %404 = getelementptr inbounds nuw i8, ptr %163, i64 5568
  %405 = getelementptr inbounds double, ptr %404, i64 %6
  store double %324, ptr %405, align 8, !tbaa !44
  %406 = load double, ptr %340, align 8, !tbaa !44
  %407 = fadd double %335, %406
  %408 = getelementptr inbounds nuw i8, ptr %163, i64 1600
  %409 = getelementptr inbounds double, ptr %408, i64 %6
  store double %407, ptr %409, align 8, !tbaa !44
  %410 = fcmp ogt double %406, 0.000000e+00
  %411 = fdiv double 1.000000e+00, %406
  %412 = select i1 %410, double %411, double 0.000000e+00
  %413 = getelementptr inbounds nuw i8, ptr %163, i64 7744
  %414 = getelementptr inbounds double, ptr %413, i64 %6
  store double %412, ptr %414, align 8, !tbaa !44
  %415 = getelementptr inbounds nuw i8, ptr %163, i64 704
  %416 = getelementptr inbounds double, ptr %415, i64 %6
  %417 = load double, ptr %416, align 8, !tbaa !44
  %418 = fdiv double 1.000000e+00, %417
  %419 = getelementptr inbounds nuw i8, ptr %163, i64 7808
  %420 = getelementptr inbounds double, ptr %419, i64 %6
  store double %418, ptr %420, align 8, !tbaa !44
  %421 = getelementptr inbounds nuw i8, ptr %163, i64 5952
  %422 = getelementptr inbounds nuw i8, ptr %163, i64 6784
  %423 = getelementptr inbounds nuw i8, ptr %163, i64 6848
  %424 = getelementptr inbounds nuw i8, ptr %163, i64 7616
  %425 = getelementptr inbounds double, ptr %421, i64 %6
  store double %230, ptr %425, align 8, !tbaa !44
  %426 = getelementptr inbounds double, ptr %422, i64 %6
  store double %230, ptr %426, align 8, !tbaa !44
  %427 = getelementptr inbounds double, ptr %423, i64 %6
  store double %230, ptr %427, align 8, !tbaa !44
  %428 = getelementptr inbounds double, ptr %424, i64 %6
  store double %230, ptr %428, align 8, !tbaa !44
  %429 = getelementptr inbounds nuw i8, ptr %163, i64 6016
  %430 = getelementptr inbounds nuw i8, ptr %163, i64 6080
  %431 = getelementptr inbounds nuw i8, ptr %163, i64 7680
  %432 = getelementptr inbounds nuw i8, ptr %163, i64 7552
  %433 = getelementptr inbounds nuw i8, ptr %163, i64 7232
  %434 = getelementptr inbounds double, ptr %429, i64 %6
  store double 0.000000e+00, ptr %434, align 8, !tbaa !44
  %435 = getelementptr inbounds double, ptr %430, i64 %6
  store double 0.000000e+00, ptr %435, align 8, !tbaa !44
  %436 = getelementptr inbounds double, ptr %431, i64 %6
  store double 0.000000e+00, ptr %436, align 8, !tbaa !44
  %437 = getelementptr inbounds double, ptr %432, i64 %6
  store double 0.000000e+00, ptr %437, align 8, !tbaa !44
  %438 = getelementptr inbounds double, ptr %433, i64 %6
  store double 0.000000e+00, ptr %438, align 8, !tbaa !44
  %439 = getelementptr inbounds nuw i8, ptr %163, i64 8320
  %440 = getelementptr inbounds i64, ptr %439, i64 %6
  store i64 0, ptr %440, align 8, !tbaa !30
  %441 = getelementptr inbounds nuw i8, ptr %163, i64 8384
  %442 = getelementptr inbounds i64, ptr %441, i64 %6
  store i64 -1, ptr %442, align 8, !tbaa !30
  %443 = getelementptr inbounds nuw i8, ptr %163, i64 8448
  %444 = getelementptr inbounds i64, ptr %443, i64 %6
  store i64 0, ptr %444, align 8, !tbaa !30
  br i1 %185, label %467, label %483

445:                                              ; preds = %283, %445
  %446 = phi i64 [ 0, %283 ], [ %465, %445 ]
  %447 = icmp slt i64 %446, %170
  %448 = select i1 %447, double %284, double 1.000000e+00
  %449 = shl i64 %446, 8
  %450 = getelementptr i8, ptr %287, i64 %449
  %451 = load double, ptr %450, align 8, !tbaa !44
  %452 = fmul double %448, %451
  store double %452, ptr %450, align 8, !tbaa !44
  %453 = fdiv double %448, %231
  %454 = getelementptr i8, ptr %450, i64 64
  %455 = load double, ptr %454, align 8, !tbaa !44
  %456 = fmul double %453, %455
  store double %456, ptr %454, align 8, !tbaa !44
  %457 = fdiv double %453, %231
  %458 = getelementptr i8, ptr %450, i64 128
  %459 = load double, ptr %458, align 8, !tbaa !44
  %460 = fmul double %457, %459
  store double %460, ptr %458, align 8, !tbaa !44
  %461 = fdiv double %457, %231
  %462 = getelementptr i8, ptr %450, i64 192
  %463 = load double, ptr %462, align 8, !tbaa !44
  %464 = fmul double %461, %463
  store double %464, ptr %462, align 8, !tbaa !44
  %465 = add nuw nsw i64 %446, 1
  %466 = icmp slt i64 %446, %164
  br i1 %466, label %445, label %309, !llvm.loop !175

467:                                              ; preds = %309
  %468 = getelementptr inbounds nuw i8, ptr %163, i64 8536
  %469 = load ptr, ptr %468, align 8, !tbaa !58
  %470 = getelementptr double, ptr %469, i64 %6
  %471 = getelementptr inbounds nuw i8, ptr %163, i64 8528
  %472 = load ptr, ptr %471, align 16, !tbaa !48
  %473 = getelementptr double, ptr %472, i64 %6
  %474 = getelementptr inbounds nuw i8, ptr %163, i64 8520
  %475 = load ptr, ptr %474, align 8, !tbaa !59
  %476 = getelementptr double, ptr %475, i64 %6
  %477 = getelementptr inbounds nuw i8, ptr %163, i64 8560
  %478 = load ptr, ptr %477, align 16, !tbaa !49
  %479 = getelementptr double, ptr %478, i64 %6
  %480 = getelementptr inbounds nuw i8, ptr %163, i64 8552
  %481 = load ptr, ptr %480, align 8, !tbaa !69
  %482 = getelementptr double, ptr %481, i64 %6
  br label %496

483:                                              ; preds = %496, %309
  %484 = icmp slt i64 %165, 0
  br i1 %484, label %557, label %485

485:                                              ; preds = %483
  %486 = getelementptr inbounds nuw i8, ptr %163, i64 8704
  %487 = load ptr, ptr %486, align 64, !tbaa !61
  %488 = getelementptr double, ptr %487, i64 %6
  %489 = getelementptr inbounds nuw i8, ptr %163, i64 8696
  %490 = load ptr, ptr %489, align 8, !tbaa !51
  %491 = getelementptr double, ptr %490, i64 %6
  %492 = icmp eq i64 %165, 0
  br i1 %492, label %505, label %493

493:                                              ; preds = %485
  %494 = add nuw i64 %165, 1
  %495 = and i64 %494, -2
  br label %530

496:                                              ; preds = %467, %496
  %497 = phi i64 [ 0, %467 ], [ %503, %496 ]
  %498 = getelementptr <8 x double>, ptr %470, i64 %497
  store double %230, ptr %498, align 8, !tbaa !44
  %499 = getelementptr <8 x double>, ptr %473, i64 %497
  store double %230, ptr %499, align 8, !tbaa !44
  %500 = getelementptr <8 x double>, ptr %476, i64 %497
  store double %230, ptr %500, align 8, !tbaa !44
  %501 = getelementptr <8 x double>, ptr %479, i64 %497
  store double 1.000000e+00, ptr %501, align 8, !tbaa !44
  %502 = getelementptr <8 x double>, ptr %482, i64 %497
  store double 1.000000e+00, ptr %502, align 8, !tbaa !44
  %503 = add nuw nsw i64 %497, 1
  %504 = icmp eq i64 %503, %164
  br i1 %504, label %483, label %496, !llvm.loop !176

505:                                              ; preds = %544, %485
  %506 = phi i64 [ 0, %485 ], [ %548, %544 ]
  %507 = and i64 %165, 1
  %508 = icmp eq i64 %507, 0
  br i1 %508, label %509, label %517

509:                                              ; preds = %505
  %510 = icmp slt i64 %506, %165
  br i1 %510, label %513, label %511

511:                                              ; preds = %509
  %512 = load double, ptr %329, align 8, !tbaa !44
  br label %513

513:                                              ; preds = %511, %509
  %514 = phi double [ %512, %511 ], [ %324, %509 ]
  %515 = getelementptr <8 x double>, ptr %488, i64 %506
  store double %514, ptr %515, align 8, !tbaa !44
  %516 = getelementptr <8 x double>, ptr %491, i64 %506
  store double %514, ptr %516, align 8, !tbaa !44
  br label %517

517:                                              ; preds = %505, %513
  %518 = icmp eq i64 %165, 0
  br i1 %518, label %557, label %519

519:                                              ; preds = %517
  %520 = getelementptr inbounds nuw i8, ptr %163, i64 8656
  %521 = load ptr, ptr %520, align 16, !tbaa !63
  %522 = getelementptr double, ptr %521, i64 %6
  %523 = getelementptr inbounds nuw i8, ptr %163, i64 8648
  %524 = load ptr, ptr %523, align 8, !tbaa !52
  %525 = getelementptr double, ptr %524, i64 %6
  %526 = and i64 %165, 1
  %527 = icmp eq i64 %165, 1
  br i1 %527, label %551, label %528

528:                                              ; preds = %519
  %529 = and i64 %165, 9223372036854775806
  br label %561

530:                                              ; preds = %544, %493
  %531 = phi i64 [ 0, %493 ], [ %548, %544 ]
  %532 = phi i64 [ 0, %493 ], [ %549, %544 ]
  %533 = icmp slt i64 %531, %165
  br i1 %533, label %536, label %534

534:                                              ; preds = %530
  %535 = load double, ptr %329, align 8, !tbaa !44
  br label %536

536:                                              ; preds = %530, %534
  %537 = phi double [ %535, %534 ], [ %324, %530 ]
  %538 = getelementptr <8 x double>, ptr %488, i64 %531
  store double %537, ptr %538, align 8, !tbaa !44
  %539 = getelementptr <8 x double>, ptr %491, i64 %531
  store double %537, ptr %539, align 8, !tbaa !44
  %540 = or disjoint i64 %531, 1
  %541 = icmp slt i64 %540, %165
  br i1 %541, label %544, label %542

542:                                              ; preds = %536
  %543 = load double, ptr %329, align 8, !tbaa !44
  br label %544

544:                                              ; preds = %542, %536
  %545 = phi double [ %543, %542 ], [ %324, %536 ]
  %546 = getelementptr <8 x double>, ptr %488, i64 %540
  store double %545, ptr %546, align 8, !tbaa !44
  %547 = getelementptr <8 x double>, ptr %491, i64 %540
  store double %545, ptr %547, align 8, !tbaa !44
  %548 = add nuw i64 %531, 2
  %549 = add i64 %532, 2
  %550 = icmp eq i64 %549, %495
  br i1 %550, label %505, label %530, !llvm.loop !177

551:                                              ; preds = %561, %519
  %552 = phi i64 [ 0, %519 ], [ %569, %561 ]
  %553 = icmp eq i64 %526, 0
  br i1 %553, label %557, label %554

554:                                              ; preds = %551
  %555 = getelementptr <8 x double>, ptr %522, i64 %552
  store double %230, ptr %555, align 8, !tbaa !44
  %556 = getelementptr <8 x double>, ptr %525, i64 %552
  store double %230, ptr %556, align 8, !tbaa !44
  br label %557

557:                                              ; preds = %554, %551, %483, %517
  %558 = add nuw nsw i64 %162, 1
  %559 = load i64, ptr %27, align 8, !tbaa !20
  %560 = icmp slt i64 %558, %559
  br i1 %560, label %161, label %62, !llvm.loop !178

561:                                              ; preds = %561, %528
  %562 = phi i64 [ 0, %528 ], [ %569, %561 ]
  %563 = phi i64 [ 0, %528 ], [ %570, %561 ]
  %564 = getelementptr <8 x double>, ptr %522, i64 %562
  store double %230, ptr %564, align 8, !tbaa !44
  %565 = getelementptr <8 x double>, ptr %525, i64 %562
  store double %230, ptr %565, align 8, !tbaa !44
  %566 = or disjoint i64 %562, 1
  %567 = getelementptr <8 x double>, ptr %522, i64 %566
  store double %230, ptr %567, align 8, !tbaa !44
  %568 = getelementptr <8 x double>, ptr %525, i64 %566
  store double %230, ptr %568, align 8, !tbaa !44
  %569 = add nuw nsw i64 %562, 2
  %570 = add i64 %563, 2
  %571 = icmp eq i64 %570, %529
  br i1 %571, label %551, label %561, !llvm.loop !179
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !180
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !181
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
  %19 = load double, ptr %18, align 8, !tbaa !44
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !182
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !44
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !44
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
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !44
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !44
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6144
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !44
  br label %270

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !44
  %82 = load double, ptr %35, align 8, !tbaa !44
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !44
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4416
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !44
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !44
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !44
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !44
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !44
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !44
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !44
  %99 = load double, ptr %80, align 8, !tbaa !44
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !44
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %201

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
  %199 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %200 = getelementptr inbounds double, ptr %199, i64 %10
  store double %198, ptr %200, align 8, !tbaa !44
  br label %201

201:                                              ; preds = %79, %152
  %202 = fcmp une double %99, %103
  br i1 %202, label %203, label %242

203:                                              ; preds = %201
  %204 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %205 = getelementptr inbounds double, ptr %204, i64 %10
  store double %99, ptr %205, align 8, !tbaa !44
  %206 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %207 = getelementptr inbounds double, ptr %206, i64 %10
  store double %82, ptr %207, align 8, !tbaa !44
  %208 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %209 = getelementptr inbounds double, ptr %208, i64 %10
  %210 = load double, ptr %209, align 8, !tbaa !44
  %211 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %212 = getelementptr inbounds double, ptr %211, i64 %10
  store double %210, ptr %212, align 8, !tbaa !44
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %214 = getelementptr inbounds i64, ptr %213, i64 %10
  store i64 -1, ptr %214, align 8, !tbaa !30
  %215 = fcmp oeq double %99, 0.000000e+00
  %216 = fcmp oeq double %99, 3.000000e+00
  %217 = or i1 %215, %216
  br i1 %217, label %218, label %226

218:                                              ; preds = %203
  %219 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %220 = getelementptr inbounds double, ptr %219, i64 %10
  store double %30, ptr %220, align 8, !tbaa !44
  store double %30, ptr %26, align 8, !tbaa !44
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %222 = getelementptr inbounds double, ptr %221, i64 %10
  %223 = load double, ptr %222, align 8, !tbaa !44
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %225 = getelementptr inbounds double, ptr %224, i64 %10
  store double %223, ptr %225, align 8, !tbaa !44
  br label %226

226:                                              ; preds = %203, %218
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %228 = load i64, ptr %227, align 8, !tbaa !20
  %229 = icmp sgt i64 %228, 0
  br i1 %229, label %230, label %242

230:                                              ; preds = %226
  %231 = getelementptr inbounds nuw i8, ptr %0, i64 6216
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
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 2880
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
  %257 = getelementptr inbounds nuw i8, ptr %0, i64 5632
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
  %267 = getelementptr inbounds nuw i8, ptr %0, i64 5760
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
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3840, !7, i64 4736, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !7, i64 7552, !7, i64 7616, !7, i64 7680, !7, i64 7744, !7, i64 7808, !34, i64 7872, !7, i64 8256, !7, i64 8320, !7, i64 8384, !7, i64 8448, !6, i64 8512, !11, i64 8520, !11, i64 8528, !11, i64 8536, !11, i64 8544, !11, i64 8552, !11, i64 8560, !11, i64 8568, !11, i64 8576, !11, i64 8584, !11, i64 8592, !11, i64 8600, !11, i64 8608, !11, i64 8616, !11, i64 8624, !11, i64 8632, !11, i64 8640, !11, i64 8648, !11, i64 8656, !11, i64 8664, !11, i64 8672, !11, i64 8680, !11, i64 8688, !11, i64 8696, !11, i64 8704}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320}
!35 = !{!11, !11, i64 0}
!36 = !{!32, !11, i64 8632}
!37 = distinct !{!37, !38}
!38 = !{!"llvm.loop.mustprogress"}
!39 = !{!17, !11, i64 6208}
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
