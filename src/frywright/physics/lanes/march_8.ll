; Made by scripts/lanes.py from sources of sha256 f26ea03910d7dc9d4e4327058d85f1e28d69cab0fdd54c31dfb0f7e362ec054e.
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
  br i1 %138, label %5776, label %139

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
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 2336
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

549:                                              ; preds = %5733, %5775, %5772, %3961, %4243, %548
  %550 = load i64, ptr %133, align 8, !tbaa !42
  %551 = load i64, ptr %134, align 8, !tbaa !43
  %552 = sub nsw i64 %550, %551
  %553 = icmp slt i64 %552, 16
  br i1 %553, label %5776, label %545

554:                                              ; preds = %548
  %555 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %556 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %555)
  %557 = icmp eq i64 %556, 0
  br i1 %557, label %5776, label %558

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
  br label %2380

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
  br i1 %1535, label %2386, label %2380

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

2378:                                             ; preds = %2481
  %2379 = icmp sgt i64 %2482, 0
  br label %2380

2380:                                             ; preds = %2378, %1524, %1533
  %2381 = phi <8 x double> [ %1534, %1533 ], [ %1525, %1524 ], [ %1534, %2378 ]
  %2382 = phi i1 [ false, %1533 ], [ false, %1524 ], [ %2379, %2378 ]
  %2383 = fcmp ogt <8 x double> %2381, zeroinitializer
  %2384 = bitcast <8 x i1> %2383 to i8
  %2385 = icmp eq i8 %2384, 0
  br i1 %2385, label %2568, label %2485

2386:                                             ; preds = %1533, %2481
  %2387 = phi i64 [ %2482, %2481 ], [ %2376, %1533 ]
  %2388 = phi i64 [ %2483, %2481 ], [ 0, %1533 ]
  %2389 = load ptr, ptr %151, align 8, !tbaa !28
  %2390 = getelementptr inbounds nuw %struct.Piece, ptr %2389, i64 %2388
  %2391 = getelementptr inbounds nuw i8, ptr %2390, i64 8448
  %2392 = load <8 x i64>, ptr %2391, align 64, !tbaa !26
  %2393 = getelementptr inbounds nuw i8, ptr %2390, i64 2240
  %2394 = load <8 x double>, ptr %2393, align 64, !tbaa !26
  %2395 = fcmp ogt <8 x double> %2394, zeroinitializer
  %2396 = select <8 x i1> %2395, <8 x i64> %2392, <8 x i64> zeroinitializer
  %2397 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2396)
  %2398 = icmp eq i64 %2397, 0
  br i1 %2398, label %2481, label %2399

2399:                                             ; preds = %2386
  %2400 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2401 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2402 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> %2401, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2403 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2404 = getelementptr inbounds nuw i8, ptr %2390, i64 6208
  %2405 = load <8 x double>, ptr %2404, align 64, !tbaa !26
  %2406 = getelementptr inbounds nuw i8, ptr %2390, i64 6272
  %2407 = load <8 x double>, ptr %2406, align 64, !tbaa !26
  %2408 = fdiv <8 x double> %2405, %2407
  %2409 = fcmp olt <8 x double> %2408, %2400
  %2410 = select <8 x i1> %2409, <8 x double> %2408, <8 x double> %2400
  %2411 = getelementptr inbounds nuw i8, ptr %2390, i64 3584
  %2412 = load <8 x double>, ptr %2411, align 64, !tbaa !26
  %2413 = fcmp olt <8 x double> %2412, %2410
  %2414 = select <8 x i1> %2413, <8 x double> %2412, <8 x double> %2410
  %2415 = fneg <8 x double> %2407
  %2416 = getelementptr inbounds nuw i8, ptr %2390, i64 7488
  %2417 = load <8 x double>, ptr %2416, align 64, !tbaa !26
  br label %2421

2418:                                             ; preds = %2421
  %2419 = getelementptr inbounds nuw i8, ptr %2390, i64 6336
  store <8 x double> %2472, ptr %2419, align 64, !tbaa !26
  %2420 = load i64, ptr %178, align 8, !tbaa !20
  br label %2481

2421:                                             ; preds = %2399, %2421
  %2422 = phi <8 x i64> [ %2396, %2399 ], [ %2475, %2421 ]
  %2423 = phi i32 [ 0, %2399 ], [ %2476, %2421 ]
  %2424 = phi <8 x double> [ %2414, %2399 ], [ %2472, %2421 ]
  %2425 = fadd <8 x double> %2424, splat (double 2.731500e+02)
  %2426 = fcmp ogt <8 x double> %2424, zeroinitializer
  %2427 = select <8 x i1> %2426, <8 x double> %2424, <8 x double> zeroinitializer
  %2428 = fadd <8 x double> %2427, splat (double 2.731500e+02)
  %2429 = fadd <8 x double> %2428, splat (double 0xC08451671D164BD4)
  %2430 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2429
  %2431 = fsub <8 x double> %2428, %2430
  %2432 = fadd <8 x double> %2431, splat (double 0x40923C3565924845)
  %2433 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2431, <8 x double> %2432, <8 x double> splat (double 0xC12619EA558539E6))
  %2434 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2431, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2435 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2431, <8 x double> %2434, <8 x double> splat (double 0xC148A99584203885))
  %2436 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2431, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2437 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2431, <8 x double> %2436, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2438 = fmul <8 x double> %2437, splat (double 2.000000e+00)
  %2439 = fmul <8 x double> %2433, splat (double 4.000000e+00)
  %2440 = fneg <8 x double> %2437
  %2441 = fmul <8 x double> %2439, %2440
  %2442 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2435, <8 x double> %2435, <8 x double> %2441)
  %2443 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2442)
  %2444 = fsub <8 x double> %2443, %2435
  %2445 = fdiv <8 x double> %2438, %2444
  %2446 = fmul <8 x double> %2445, %2445
  %2447 = fmul <8 x double> %2446, splat (double 1.000000e+06)
  %2448 = fmul <8 x double> %2446, %2447
  %2449 = fmul <8 x double> %2425, splat (double 4.615260e+02)
  %2450 = fdiv <8 x double> %2448, %2449
  %2451 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2415, <8 x double> %2424, <8 x double> %2405)
  %2452 = fsub <8 x double> %2450, %2403
  %2453 = fcmp ogt <8 x double> %2452, zeroinitializer
  %2454 = select <8 x i1> %2453, <8 x double> %2452, <8 x double> zeroinitializer
  %2455 = fmul <8 x double> %2402, %2454
  %2456 = fdiv <8 x double> %2455, %2417
  %2457 = fsub <8 x double> %2451, %2456
  %2458 = fmul <8 x double> %2402, %2450
  %2459 = fdiv <8 x double> %2402, %2449
  %2460 = fadd <8 x double> %2459, splat (double -1.000000e+00)
  %2461 = fmul <8 x double> %2460, %2458
  %2462 = fdiv <8 x double> %2461, %2425
  %2463 = fdiv <8 x double> %2462, %2417
  %2464 = fcmp ule <8 x double> %2450, %2403
  %2465 = select <8 x i1> %2464, <8 x double> zeroinitializer, <8 x double> %2463
  %2466 = fsub <8 x double> %2415, %2465
  %2467 = fdiv <8 x double> %2457, %2466
  %2468 = fsub <8 x double> %2424, %2467
  %2469 = fcmp olt <8 x double> %2468, %2410
  %2470 = select <8 x i1> %2469, <8 x double> %2468, <8 x double> %2410
  %2471 = icmp eq <8 x i64> %2422, zeroinitializer
  %2472 = select <8 x i1> %2471, <8 x double> %2424, <8 x double> %2470
  %2473 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2467)
  %2474 = fcmp oge <8 x double> %2473, splat (double 1.000000e-05)
  %2475 = select <8 x i1> %2474, <8 x i64> %2422, <8 x i64> zeroinitializer
  %2476 = add nuw nsw i32 %2423, 1
  %2477 = icmp samesign ult i32 %2423, 7
  %2478 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2475)
  %2479 = icmp ne i64 %2478, 0
  %2480 = select i1 %2477, i1 %2479, i1 false
  br i1 %2480, label %2421, label %2418, !llvm.loop !98

2481:                                             ; preds = %2386, %2418
  %2482 = phi i64 [ %2387, %2386 ], [ %2420, %2418 ]
  %2483 = add nuw nsw i64 %2388, 1
  %2484 = icmp slt i64 %2483, %2482
  br i1 %2484, label %2386, label %2378, !llvm.loop !99

2485:                                             ; preds = %2380
  %2486 = sext <8 x i1> %2383 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2486, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %2487 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %2488 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2489 = fadd <8 x double> %2487, %2488
  store <8 x double> %2489, ptr %6, align 64, !tbaa !26
  %2490 = load ptr, ptr %191, align 8
  %2491 = load ptr, ptr %193, align 8
  %2492 = load ptr, ptr %194, align 8
  br label %2493

2493:                                             ; preds = %2563, %2485
  %2494 = phi i64 [ 0, %2485 ], [ %2564, %2563 ]
  %2495 = getelementptr inbounds nuw i64, ptr %4, i64 %2494
  %2496 = load i64, ptr %2495, align 8, !tbaa !30
  %2497 = icmp eq i64 %2496, 0
  br i1 %2497, label %2563, label %2498

2498:                                             ; preds = %2493
  %2499 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %2494
  %2500 = load i64, ptr %2499, align 8, !tbaa !30
  %2501 = shl nsw i64 %2500, 1
  %2502 = or disjoint i64 %2501, 1
  %2503 = getelementptr inbounds i64, ptr %2490, i64 %2502
  %2504 = load i64, ptr %2503, align 8, !tbaa !30
  %2505 = shl nuw nsw i64 %2494, 1
  %2506 = or disjoint i64 %2505, 1
  %2507 = getelementptr inbounds nuw [16 x i64], ptr %192, i64 0, i64 %2506
  %2508 = getelementptr inbounds i64, ptr %2492, i64 %2502
  %2509 = load i64, ptr %2508, align 8, !tbaa !30
  %2510 = shl nsw i64 %2509, 4
  %2511 = getelementptr inbounds i8, ptr %2491, i64 %2510
  %2512 = getelementptr inbounds nuw double, ptr %6, i64 %2494
  %2513 = load double, ptr %2512, align 8, !tbaa !44
  %2514 = load i64, ptr %2507, align 8, !tbaa !30
  %2515 = getelementptr i8, ptr %2511, i64 -16
  %2516 = icmp sgt i64 %2514, 0
  br i1 %2516, label %2517, label %2526

2517:                                             ; preds = %2498, %2523
  %2518 = phi i64 [ %2524, %2523 ], [ %2514, %2498 ]
  %2519 = shl i64 %2518, 4
  %2520 = getelementptr i8, ptr %2515, i64 %2519
  %2521 = load double, ptr %2520, align 8, !tbaa !44
  %2522 = fcmp ugt double %2513, %2521
  br i1 %2522, label %2526, label %2523

2523:                                             ; preds = %2517
  %2524 = add nsw i64 %2518, -1
  store i64 %2524, ptr %2507, align 8, !tbaa !30
  %2525 = icmp sgt i64 %2518, 1
  br i1 %2525, label %2517, label %2526, !llvm.loop !79

2526:                                             ; preds = %2523, %2517, %2498
  %2527 = phi i64 [ %2514, %2498 ], [ 0, %2523 ], [ %2518, %2517 ]
  %2528 = icmp slt i64 %2527, %2504
  br i1 %2528, label %2529, label %2538

2529:                                             ; preds = %2526, %2535
  %2530 = phi i64 [ %2536, %2535 ], [ %2527, %2526 ]
  %2531 = shl nsw i64 %2530, 4
  %2532 = getelementptr inbounds i8, ptr %2511, i64 %2531
  %2533 = load double, ptr %2532, align 8, !tbaa !44
  %2534 = fcmp ule double %2513, %2533
  br i1 %2534, label %2543, label %2535

2535:                                             ; preds = %2529
  %2536 = add i64 %2530, 1
  store i64 %2536, ptr %2507, align 8, !tbaa !30
  %2537 = icmp eq i64 %2536, %2504
  br i1 %2537, label %2538, label %2529, !llvm.loop !80

2538:                                             ; preds = %2535, %2526
  %2539 = shl i64 %2504, 4
  %2540 = getelementptr i8, ptr %2511, i64 %2539
  %2541 = getelementptr i8, ptr %2540, i64 -8
  %2542 = load double, ptr %2541, align 8, !tbaa !44
  br label %2560

2543:                                             ; preds = %2529
  %2544 = shl nsw i64 %2530, 1
  %2545 = or disjoint i64 %2544, 1
  %2546 = getelementptr inbounds double, ptr %2511, i64 %2545
  %2547 = load double, ptr %2546, align 8, !tbaa !44
  %2548 = icmp sgt i64 %2530, 0
  br i1 %2548, label %2549, label %2560

2549:                                             ; preds = %2543
  %2550 = getelementptr inbounds nuw i8, ptr %2511, i64 %2531
  %2551 = getelementptr i8, ptr %2550, i64 -8
  %2552 = load double, ptr %2551, align 8, !tbaa !44
  %2553 = getelementptr i8, ptr %2550, i64 -16
  %2554 = load double, ptr %2553, align 8, !tbaa !44
  %2555 = fsub double %2513, %2554
  %2556 = fsub double %2533, %2554
  %2557 = fdiv double %2555, %2556
  %2558 = fsub double %2547, %2552
  %2559 = tail call double @llvm.fmuladd.f64(double %2557, double %2558, double %2552)
  br label %2560

2560:                                             ; preds = %2549, %2543, %2538
  %2561 = phi double [ %2559, %2549 ], [ %2547, %2543 ], [ %2542, %2538 ]
  %2562 = getelementptr inbounds nuw double, ptr %5, i64 %2494
  store double %2561, ptr %2562, align 8, !tbaa !44
  br label %2563

2563:                                             ; preds = %2560, %2493
  %2564 = add nuw nsw i64 %2494, 1
  %2565 = icmp eq i64 %2564, 8
  br i1 %2565, label %2566, label %2493, !llvm.loop !81

2566:                                             ; preds = %2563
  %2567 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2568

2568:                                             ; preds = %2380, %2566
  %2569 = phi <8 x double> [ %2567, %2566 ], [ zeroinitializer, %2380 ]
  %2570 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2571 = fcmp ogt <8 x double> %2570, zeroinitializer
  %2572 = sext <8 x i1> %2571 to <8 x i64>
  %2573 = xor <8 x i64> %2572, splat (i64 -1)
  %2574 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2575 = fcmp oeq <8 x double> %2574, splat (double 1.000000e+00)
  %2576 = fcmp oeq <8 x double> %2574, splat (double 2.000000e+00)
  %2577 = or <8 x i1> %2575, %2576
  %2578 = select <8 x i1> %2577, <8 x i64> %2573, <8 x i64> zeroinitializer
  %2579 = xor <8 x i64> %2578, %2572
  %2580 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2581 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2582 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2583 = icmp eq <8 x i64> %2579, splat (i64 -1)
  %2584 = select <8 x i1> %2583, <8 x double> %2582, <8 x double> %2581
  %2585 = bitcast <8 x i1> %2571 to i8
  %2586 = icmp eq i8 %2585, 0
  br i1 %2586, label %2618, label %2587

2587:                                             ; preds = %2568
  %2588 = select <8 x i1> %2571, <8 x double> %2569, <8 x double> %2584
  %2589 = fmul <8 x double> %2588, splat (double 0x3EB0C6F7A0B5ED8D)
  %2590 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2589)
  %2591 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2590)
  %2592 = fmul <8 x double> %2591, %2591
  %2593 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2591, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2592)
  %2594 = fadd <8 x double> %2593, splat (double 0x402DD4891DBECC6B)
  %2595 = fmul <8 x double> %2591, splat (double 0x40C77A698FD9BCCA)
  %2596 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2592, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2595)
  %2597 = fadd <8 x double> %2596, splat (double 0xC0B2D7440748F0B3)
  %2598 = fmul <8 x double> %2591, splat (double 0xC148A99584203885)
  %2599 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2592, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2598)
  %2600 = fadd <8 x double> %2599, splat (double 0x4118B9E59F2691E5)
  %2601 = fmul <8 x double> %2600, splat (double 2.000000e+00)
  %2602 = fneg <8 x double> %2597
  %2603 = fmul <8 x double> %2594, splat (double 4.000000e+00)
  %2604 = fneg <8 x double> %2600
  %2605 = fmul <8 x double> %2603, %2604
  %2606 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2597, <8 x double> %2597, <8 x double> %2605)
  %2607 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2606)
  %2608 = fsub <8 x double> %2602, %2607
  %2609 = fdiv <8 x double> %2601, %2608
  %2610 = fadd <8 x double> %2609, splat (double 0x408451671D164BD4)
  %2611 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2609, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2612 = fmul <8 x double> %2611, splat (double -4.000000e+00)
  %2613 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2610, <8 x double> %2610, <8 x double> %2612)
  %2614 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2613)
  %2615 = fsub <8 x double> %2610, %2614
  %2616 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2615, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2617 = select <8 x i1> %2571, <8 x double> %2616, <8 x double> %2580
  br label %2618

2618:                                             ; preds = %2587, %2568
  %2619 = phi <8 x double> [ %2588, %2587 ], [ %2584, %2568 ]
  %2620 = phi <8 x double> [ %2617, %2587 ], [ %2580, %2568 ]
  %2621 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2622 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2623 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2624 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %2625 = fmul <8 x double> %2623, %2624
  %2626 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2621, <8 x double> %2622, <8 x double> %2625)
  %2627 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %2628 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2629 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2630 = fneg <8 x double> %2626
  %2631 = fmul <8 x double> %2629, %2630
  %2632 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2627, <8 x double> %2628, <8 x double> %2631)
  %2633 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2634 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2629, <8 x double> %2633, <8 x double> %2627)
  %2635 = fdiv <8 x double> %2632, %2634
  %2636 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2637 = select <8 x i1> %2583, <8 x double> %2636, <8 x double> %2581
  store <8 x double> %2637, ptr %207, align 64, !tbaa !26
  %2638 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %2639 = select <8 x i1> %2583, <8 x double> %2638, <8 x double> %2635
  store <8 x double> %2639, ptr %208, align 64, !tbaa !26
  store <8 x double> %2619, ptr %201, align 64, !tbaa !26
  %2640 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %2641 = and <8 x i64> %2640, %2578
  %2642 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2641)
  %2643 = icmp eq i64 %2642, 0
  br i1 %2643, label %3191, label %2644

2644:                                             ; preds = %2618
  %2645 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %2646 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %2647 = fmul <8 x double> %2623, %2646
  %2648 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2621, <8 x double> %2645, <8 x double> %2647)
  %2649 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %2650 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2651 = fdiv <8 x double> %2649, %2650
  %2652 = fmul <8 x double> %2581, splat (double 3.000000e-01)
  %2653 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %2654 = fadd <8 x double> %2581, %2653
  %2655 = fadd <8 x double> %2654, splat (double 2.000000e+05)
  %2656 = fmul <8 x double> %2650, splat (double 2.870530e+02)
  %2657 = fdiv <8 x double> %2581, %2656
  %2658 = fcmp ogt <8 x double> %2619, %2652
  %2659 = select <8 x i1> %2658, <8 x double> %2619, <8 x double> %2652
  %2660 = fcmp olt <8 x double> %2659, %2655
  %2661 = select <8 x i1> %2660, <8 x double> %2659, <8 x double> %2655
  %2662 = icmp eq <8 x i64> %2578, zeroinitializer
  %2663 = select <8 x i1> %2662, <8 x double> %2619, <8 x double> %2661
  %2664 = fdiv <8 x double> %2637, splat (double 2.870530e+02)
  %2665 = fmul <8 x double> %2657, splat (double 2.000000e+00)
  %2666 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2665)
  br label %2667

2667:                                             ; preds = %2973, %2644
  %2668 = phi <8 x double> [ %2620, %2644 ], [ %2702, %2973 ]
  %2669 = phi <8 x double> [ %2652, %2644 ], [ %3130, %2973 ]
  %2670 = phi <8 x double> [ %2655, %2644 ], [ %3127, %2973 ]
  %2671 = phi <8 x i64> [ %2641, %2644 ], [ %3146, %2973 ]
  %2672 = phi i32 [ 0, %2644 ], [ %3151, %2973 ]
  %2673 = phi <8 x double> [ %2663, %2644 ], [ %3148, %2973 ]
  %2674 = fmul <8 x double> %2673, splat (double 0x3EB0C6F7A0B5ED8D)
  %2675 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2674)
  %2676 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2675)
  %2677 = fmul <8 x double> %2676, %2676
  %2678 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2676, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2677)
  %2679 = fadd <8 x double> %2678, splat (double 0x402DD4891DBECC6B)
  %2680 = fmul <8 x double> %2676, splat (double 0x40C77A698FD9BCCA)
  %2681 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2677, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2680)
  %2682 = fadd <8 x double> %2681, splat (double 0xC0B2D7440748F0B3)
  %2683 = fmul <8 x double> %2676, splat (double 0xC148A99584203885)
  %2684 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2677, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2683)
  %2685 = fadd <8 x double> %2684, splat (double 0x4118B9E59F2691E5)
  %2686 = fmul <8 x double> %2685, splat (double 2.000000e+00)
  %2687 = fneg <8 x double> %2682
  %2688 = fmul <8 x double> %2679, splat (double 4.000000e+00)
  %2689 = fneg <8 x double> %2685
  %2690 = fmul <8 x double> %2688, %2689
  %2691 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2682, <8 x double> %2682, <8 x double> %2690)
  %2692 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2691)
  %2693 = fsub <8 x double> %2687, %2692
  %2694 = fdiv <8 x double> %2686, %2693
  %2695 = fadd <8 x double> %2694, splat (double 0x408451671D164BD4)
  %2696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2694, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2697 = fmul <8 x double> %2696, splat (double -4.000000e+00)
  %2698 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2695, <8 x double> %2695, <8 x double> %2697)
  %2699 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2698)
  %2700 = fsub <8 x double> %2695, %2699
  %2701 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2700, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2702 = select <8 x i1> %2662, <8 x double> %2668, <8 x double> %2701
  %2703 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2702, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2704 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2702, <8 x double> %2703, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2705 = load i64, ptr %178, align 8, !tbaa !20, !noalias !100
  %2706 = icmp sgt i64 %2705, 0
  br i1 %2706, label %2707, label %2973

2707:                                             ; preds = %2667
  %2708 = fdiv <8 x double> splat (double 1.000000e+00), %2704
  br label %2709

2709:                                             ; preds = %2707, %2890
  %2710 = phi <8 x double> [ zeroinitializer, %2707 ], [ %2969, %2890 ]
  %2711 = phi <8 x double> [ zeroinitializer, %2707 ], [ %2968, %2890 ]
  %2712 = phi i64 [ 0, %2707 ], [ %2970, %2890 ]
  %2713 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !100
  %2714 = getelementptr inbounds nuw %struct.Piece, ptr %2713, i64 %2712
  %2715 = getelementptr inbounds nuw i8, ptr %2714, i64 6208
  %2716 = load <8 x double>, ptr %2715, align 64, !tbaa !26, !noalias !100
  %2717 = getelementptr inbounds nuw i8, ptr %2714, i64 6272
  %2718 = load <8 x double>, ptr %2717, align 64, !tbaa !26, !noalias !100
  %2719 = getelementptr inbounds nuw i8, ptr %2714, i64 7680
  %2720 = load <8 x double>, ptr %2719, align 64, !tbaa !26, !noalias !100
  %2721 = fcmp ule <8 x double> %2720, splat (double 1.000000e+00)
  %2722 = fmul <8 x double> %2702, %2718
  %2723 = fcmp ogt <8 x double> %2716, %2722
  %2724 = and <8 x i1> %2721, %2723
  %2725 = fneg <8 x double> %2718
  %2726 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2725, <8 x double> %2702, <8 x double> %2716)
  %2727 = fmul <8 x double> %2708, %2726
  %2728 = select <8 x i1> %2724, <8 x double> %2727, <8 x double> zeroinitializer
  %2729 = fmul <8 x double> %2708, %2725
  %2730 = fdiv <8 x double> %2716, %2718
  %2731 = select <8 x i1> %2724, <8 x double> %2702, <8 x double> %2730
  %2732 = getelementptr inbounds nuw i8, ptr %2714, i64 8448
  %2733 = load <8 x i64>, ptr %2732, align 64, !tbaa !26, !noalias !100
  %2734 = getelementptr inbounds nuw i8, ptr %2714, i64 2240
  %2735 = load <8 x double>, ptr %2734, align 64, !tbaa !26, !noalias !100
  %2736 = fcmp ule <8 x double> %2735, zeroinitializer
  %2737 = xor <8 x i1> %2721, splat (i1 true)
  %2738 = select <8 x i1> %2737, <8 x i1> splat (i1 true), <8 x i1> %2736
  %2739 = getelementptr inbounds nuw i8, ptr %2714, i64 6336
  %2740 = load <8 x double>, ptr %2739, align 64, !tbaa !26, !noalias !100
  %2741 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2725, <8 x double> %2740, <8 x double> %2716)
  %2742 = fcmp ogt <8 x double> %2741, zeroinitializer
  %2743 = select <8 x i1> %2742, <8 x double> %2741, <8 x double> zeroinitializer
  %2744 = fmul <8 x double> %2708, %2743
  %2745 = icmp eq <8 x i64> %2733, zeroinitializer
  %2746 = select <8 x i1> %2738, <8 x i1> splat (i1 true), <8 x i1> %2745
  %2747 = select <8 x i1> %2746, <8 x double> %2728, <8 x double> %2744
  %2748 = select <8 x i1> %2746, <8 x double> %2731, <8 x double> %2740
  %2749 = select <8 x i1> %2746, <8 x i1> %2724, <8 x i1> zeroinitializer
  %2750 = select <8 x i1> %2749, <8 x double> %2729, <8 x double> zeroinitializer
  %2751 = getelementptr inbounds nuw i8, ptr %2714, i64 7872
  %2752 = getelementptr inbounds nuw i8, ptr %2714, i64 8128
  %2753 = load <8 x double>, ptr %2752, align 64, !tbaa !26, !noalias !103
  %2754 = fcmp ole <8 x double> %2702, %2753
  %2755 = getelementptr inbounds nuw i8, ptr %2714, i64 8192
  %2756 = load <8 x double>, ptr %2755, align 64, !tbaa !26, !noalias !103
  %2757 = fcmp oge <8 x double> %2702, %2756
  %2758 = or <8 x i1> %2754, %2757
  %2759 = bitcast <8 x i1> %2758 to i8
  %2760 = icmp eq i8 %2759, 0
  br i1 %2760, label %2761, label %2769

2761:                                             ; preds = %2709
  %2762 = load <8 x double>, ptr %2751, align 64, !tbaa !26, !noalias !103
  %2763 = getelementptr inbounds nuw i8, ptr %2714, i64 7936
  %2764 = load <8 x double>, ptr %2763, align 64, !tbaa !26, !noalias !103
  %2765 = getelementptr inbounds nuw i8, ptr %2714, i64 8064
  %2766 = load <8 x double>, ptr %2765, align 64, !tbaa !26, !noalias !103
  %2767 = getelementptr inbounds nuw i8, ptr %2714, i64 8000
  %2768 = load <8 x double>, ptr %2767, align 64, !tbaa !26, !noalias !103
  br label %2890

2769:                                             ; preds = %2709
  %2770 = load i64, ptr %141, align 16, !tbaa !21, !noalias !106
  %2771 = sitofp i64 %2770 to double
  %2772 = insertelement <8 x double> poison, double %2771, i64 0
  %2773 = shufflevector <8 x double> %2772, <8 x double> poison, <8 x i32> zeroinitializer
  %2774 = icmp sgt i64 %2770, 0
  br i1 %2774, label %2775, label %2865

2775:                                             ; preds = %2769
  %2776 = getelementptr inbounds nuw i8, ptr %2714, i64 8568
  %2777 = load ptr, ptr %2776, align 8, !tbaa !88, !noalias !106
  %2778 = getelementptr inbounds nuw i8, ptr %2714, i64 8576
  %2779 = load ptr, ptr %2778, align 64, !tbaa !89, !noalias !106
  %2780 = getelementptr inbounds nuw i8, ptr %2714, i64 8512
  %2781 = load i64, ptr %2780, align 64, !tbaa !31, !noalias !106
  %2782 = getelementptr inbounds nuw i8, ptr %2714, i64 8592
  %2783 = getelementptr inbounds nuw i8, ptr %2714, i64 8584
  %2784 = getelementptr inbounds nuw i8, ptr %2714, i64 8600
  br label %2785

2785:                                             ; preds = %2775, %2833
  %2786 = phi <8 x i64> [ splat (i64 -1), %2775 ], [ %2805, %2833 ]
  %2787 = phi i64 [ %2770, %2775 ], [ %2795, %2833 ]
  %2788 = phi <8 x double> [ splat (double 1.000000e+09), %2775 ], [ %2848, %2833 ]
  %2789 = phi <8 x double> [ zeroinitializer, %2775 ], [ %2852, %2833 ]
  %2790 = phi <8 x double> [ splat (double 1.000000e+09), %2775 ], [ %2830, %2833 ]
  %2791 = phi <8 x double> [ splat (double 1.000000e+00), %2775 ], [ %2829, %2833 ]
  %2792 = phi <8 x double> [ %2773, %2775 ], [ %2856, %2833 ]
  %2793 = phi <8 x double> [ zeroinitializer, %2775 ], [ %2845, %2833 ]
  %2794 = phi <8 x double> [ zeroinitializer, %2775 ], [ %2843, %2833 ]
  %2795 = add nsw i64 %2787, -1
  %2796 = getelementptr inbounds nuw <8 x double>, ptr %2777, i64 %2795
  %2797 = load <8 x double>, ptr %2796, align 64, !tbaa !26, !noalias !106
  %2798 = getelementptr inbounds nuw <8 x double>, ptr %2779, i64 %2795
  %2799 = load <8 x double>, ptr %2798, align 64, !tbaa !26, !noalias !106
  %2800 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2799, <8 x double> %2702, <8 x double> %2797)
  %2801 = fsub <8 x double> %2800, %2702
  %2802 = fcmp ogt <8 x double> %2801, splat (double 1.000000e-09)
  %2803 = select <8 x i1> %2802, <8 x i64> %2786, <8 x i64> zeroinitializer
  %2804 = icmp sgt i64 %2787, %2781
  %2805 = select i1 %2804, <8 x i64> %2803, <8 x i64> zeroinitializer
  %2806 = icmp slt i64 %2787, %2770
  br i1 %2806, label %2807, label %2819

2807:                                             ; preds = %2785
  %2808 = load ptr, ptr %2782, align 16, !tbaa !86, !noalias !106
  %2809 = getelementptr inbounds nuw <8 x double>, ptr %2808, i64 %2787
  %2810 = load <8 x double>, ptr %2809, align 64, !tbaa !26, !noalias !106
  %2811 = fmul <8 x double> %2801, %2810
  %2812 = icmp eq <8 x i64> %2805, %2786
  %2813 = select <8 x i1> %2812, <8 x double> zeroinitializer, <8 x double> %2811
  %2814 = fadd <8 x double> %2794, %2813
  %2815 = fadd <8 x double> %2799, splat (double -1.000000e+00)
  %2816 = fmul <8 x double> %2815, %2810
  %2817 = select <8 x i1> %2812, <8 x double> zeroinitializer, <8 x double> %2816
  %2818 = fadd <8 x double> %2793, %2817
  br label %2819

2819:                                             ; preds = %2807, %2785
  %2820 = phi <8 x double> [ %2814, %2807 ], [ %2794, %2785 ]
  %2821 = phi <8 x double> [ %2818, %2807 ], [ %2793, %2785 ]
  br i1 %2804, label %2822, label %2828

2822:                                             ; preds = %2819
  %2823 = fneg <8 x double> %2801
  %2824 = icmp eq <8 x i64> %2805, %2786
  %2825 = select <8 x i1> %2824, <8 x double> %2790, <8 x double> %2823
  %2826 = fsub <8 x double> splat (double 1.000000e+00), %2799
  %2827 = select <8 x i1> %2824, <8 x double> %2791, <8 x double> %2826
  br label %2828

2828:                                             ; preds = %2822, %2819
  %2829 = phi <8 x double> [ %2827, %2822 ], [ %2791, %2819 ]
  %2830 = phi <8 x double> [ %2825, %2822 ], [ %2790, %2819 ]
  %2831 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2805)
  %2832 = icmp eq i64 %2831, 0
  br i1 %2832, label %2858, label %2833

2833:                                             ; preds = %2828
  %2834 = load ptr, ptr %2783, align 8, !tbaa !85, !noalias !106
  %2835 = getelementptr inbounds nuw <8 x double>, ptr %2834, i64 %2795
  %2836 = load <8 x double>, ptr %2835, align 64, !tbaa !26, !noalias !106
  %2837 = load ptr, ptr %2784, align 8, !tbaa !87, !noalias !106
  %2838 = getelementptr inbounds nuw <8 x double>, ptr %2837, i64 %2795
  %2839 = load <8 x double>, ptr %2838, align 64, !tbaa !26, !noalias !106
  %2840 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2839, <8 x double> %2702, <8 x double> %2836)
  %2841 = icmp eq <8 x i64> %2805, zeroinitializer
  %2842 = select <8 x i1> %2841, <8 x double> zeroinitializer, <8 x double> %2840
  %2843 = fadd <8 x double> %2820, %2842
  %2844 = select <8 x i1> %2841, <8 x double> zeroinitializer, <8 x double> %2839
  %2845 = fadd <8 x double> %2821, %2844
  %2846 = fcmp olt <8 x double> %2788, %2801
  %2847 = select <8 x i1> %2841, <8 x i1> splat (i1 true), <8 x i1> %2846
  %2848 = select <8 x i1> %2847, <8 x double> %2788, <8 x double> %2801
  %2849 = fsub <8 x double> splat (double 1.000000e+00), %2799
  %2850 = fcmp ogt <8 x double> %2789, %2849
  %2851 = select <8 x i1> %2841, <8 x i1> splat (i1 true), <8 x i1> %2850
  %2852 = select <8 x i1> %2851, <8 x double> %2789, <8 x double> %2849
  %2853 = uitofp nneg i64 %2795 to double
  %2854 = insertelement <8 x double> poison, double %2853, i64 0
  %2855 = shufflevector <8 x double> %2854, <8 x double> poison, <8 x i32> zeroinitializer
  %2856 = select <8 x i1> %2841, <8 x double> %2792, <8 x double> %2855
  %2857 = icmp samesign ugt i64 %2787, 1
  br i1 %2857, label %2785, label %2858, !llvm.loop !109

2858:                                             ; preds = %2828, %2833
  %2859 = phi <8 x double> [ %2856, %2833 ], [ %2792, %2828 ]
  %2860 = phi <8 x double> [ %2852, %2833 ], [ %2789, %2828 ]
  %2861 = phi <8 x double> [ %2848, %2833 ], [ %2788, %2828 ]
  %2862 = phi <8 x double> [ %2843, %2833 ], [ %2820, %2828 ]
  %2863 = phi <8 x double> [ %2845, %2833 ], [ %2821, %2828 ]
  %2864 = fdiv <8 x double> %2830, %2829
  br label %2865

2865:                                             ; preds = %2858, %2769
  %2866 = phi <8 x double> [ %2773, %2769 ], [ %2859, %2858 ]
  %2867 = phi <8 x double> [ zeroinitializer, %2769 ], [ %2860, %2858 ]
  %2868 = phi <8 x double> [ splat (double 1.000000e+09), %2769 ], [ %2861, %2858 ]
  %2869 = phi <8 x double> [ zeroinitializer, %2769 ], [ %2862, %2858 ]
  %2870 = phi <8 x double> [ zeroinitializer, %2769 ], [ %2863, %2858 ]
  %2871 = phi <8 x double> [ splat (double 1.000000e+09), %2769 ], [ %2864, %2858 ]
  %2872 = fsub <8 x double> %2702, %2871
  %2873 = fcmp ogt <8 x double> %2867, splat (double 1.000000e-09)
  %2874 = select <8 x i1> %2873, <8 x double> %2867, <8 x double> splat (double 1.000000e-09)
  %2875 = fdiv <8 x double> %2868, %2874
  %2876 = fadd <8 x double> %2702, %2875
  %2877 = load <8 x double>, ptr %2751, align 64, !tbaa !26, !noalias !103
  %2878 = select <8 x i1> %2758, <8 x double> %2869, <8 x double> %2877
  store <8 x double> %2878, ptr %2751, align 64, !tbaa !26, !noalias !103
  %2879 = getelementptr inbounds nuw i8, ptr %2714, i64 7936
  %2880 = load <8 x double>, ptr %2879, align 64, !tbaa !26, !noalias !103
  %2881 = select <8 x i1> %2758, <8 x double> %2870, <8 x double> %2880
  store <8 x double> %2881, ptr %2879, align 64, !tbaa !26, !noalias !103
  %2882 = getelementptr inbounds nuw i8, ptr %2714, i64 8000
  %2883 = load <8 x double>, ptr %2882, align 64, !tbaa !26, !noalias !103
  %2884 = select <8 x i1> %2758, <8 x double> %2866, <8 x double> %2883
  store <8 x double> %2884, ptr %2882, align 64, !tbaa !26, !noalias !103
  %2885 = getelementptr inbounds nuw i8, ptr %2714, i64 8064
  %2886 = load <8 x double>, ptr %2885, align 64, !tbaa !26, !noalias !103
  %2887 = select <8 x i1> %2758, <8 x double> %2702, <8 x double> %2886
  store <8 x double> %2887, ptr %2885, align 64, !tbaa !26, !noalias !103
  %2888 = select <8 x i1> %2758, <8 x double> %2872, <8 x double> %2753
  store <8 x double> %2888, ptr %2752, align 64, !tbaa !26, !noalias !103
  %2889 = select <8 x i1> %2758, <8 x double> %2876, <8 x double> %2756
  store <8 x double> %2889, ptr %2755, align 64, !tbaa !26, !noalias !103
  br label %2890

2890:                                             ; preds = %2761, %2865
  %2891 = phi <8 x double> [ %2768, %2761 ], [ %2884, %2865 ]
  %2892 = phi <8 x double> [ %2766, %2761 ], [ %2887, %2865 ]
  %2893 = phi <8 x double> [ %2764, %2761 ], [ %2881, %2865 ]
  %2894 = phi <8 x double> [ %2762, %2761 ], [ %2878, %2865 ]
  %2895 = fsub <8 x double> %2702, %2892
  %2896 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2893, <8 x double> %2895, <8 x double> %2894)
  %2897 = getelementptr inbounds nuw i8, ptr %2714, i64 6464
  %2898 = load <8 x double>, ptr %2897, align 64, !tbaa !26, !noalias !100
  %2899 = getelementptr inbounds nuw i8, ptr %2714, i64 5888
  %2900 = load <8 x double>, ptr %2899, align 64, !tbaa !26, !noalias !100
  %2901 = getelementptr inbounds nuw i8, ptr %2714, i64 7424
  %2902 = load <8 x double>, ptr %2901, align 64, !tbaa !26, !noalias !100
  %2903 = fneg <8 x double> %2902
  %2904 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2898, <8 x double> %2900, <8 x double> %2903)
  %2905 = getelementptr inbounds nuw i8, ptr %2714, i64 7360
  %2906 = load <8 x double>, ptr %2905, align 64, !tbaa !26, !noalias !100
  %2907 = fadd <8 x double> %2898, %2906
  %2908 = getelementptr inbounds nuw i8, ptr %2714, i64 8320
  %2909 = load <8 x i64>, ptr %2908, align 64, !tbaa !26, !noalias !100
  %2910 = getelementptr inbounds nuw i8, ptr %2714, i64 8672
  %2911 = load ptr, ptr %2910, align 32, !tbaa !94, !noalias !100
  %2912 = load <8 x double>, ptr %2911, align 64, !tbaa !26, !noalias !100
  %2913 = fmul <8 x double> %2898, %2912
  %2914 = icmp eq <8 x i64> %2909, zeroinitializer
  %2915 = select <8 x i1> %2914, <8 x double> %2904, <8 x double> %2913
  %2916 = getelementptr inbounds nuw i8, ptr %2714, i64 8680
  %2917 = load ptr, ptr %2916, align 8, !tbaa !95, !noalias !100
  %2918 = load <8 x double>, ptr %2917, align 64, !tbaa !26, !noalias !100
  %2919 = fsub <8 x double> splat (double 1.000000e+00), %2918
  %2920 = fmul <8 x double> %2898, %2919
  %2921 = select <8 x i1> %2914, <8 x double> %2907, <8 x double> %2920
  %2922 = fneg <8 x double> %2921
  %2923 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2922, <8 x double> %2702, <8 x double> %2915)
  %2924 = load i64, ptr %141, align 16, !tbaa !21, !noalias !100
  %2925 = sitofp i64 %2924 to double
  %2926 = insertelement <8 x double> poison, double %2925, i64 0
  %2927 = shufflevector <8 x double> %2926, <8 x double> poison, <8 x i32> zeroinitializer
  %2928 = fcmp olt <8 x double> %2891, %2927
  %2929 = and <8 x i1> %2721, %2928
  %2930 = fcmp ogt <8 x double> %2896, zeroinitializer
  %2931 = fcmp oge <8 x double> %2923, zeroinitializer
  %2932 = and <8 x i1> %2930, %2931
  %2933 = and <8 x i1> %2932, %2929
  %2934 = sext <8 x i1> %2933 to <8 x i64>
  %2935 = xor <8 x i64> %2934, splat (i64 -1)
  %2936 = fadd <8 x double> %2896, %2923
  %2937 = fcmp ogt <8 x double> %2936, zeroinitializer
  %2938 = select <8 x i1> %2937, <8 x i1> %2929, <8 x i1> zeroinitializer
  %2939 = select <8 x i1> %2938, <8 x i64> %2935, <8 x i64> zeroinitializer
  %2940 = or <8 x i64> %2939, %2934
  %2941 = fmul <8 x double> %2708, %2923
  %2942 = select <8 x i1> %2933, <8 x double> %2941, <8 x double> zeroinitializer
  %2943 = icmp eq <8 x i64> %2940, zeroinitializer
  %2944 = select <8 x i1> %2943, <8 x double> %2747, <8 x double> %2942
  %2945 = select <8 x i1> %2943, <8 x double> %2748, <8 x double> %2702
  %2946 = fsub <8 x double> %2893, %2921
  %2947 = fmul <8 x double> %2708, %2946
  %2948 = select <8 x i1> %2943, <8 x double> %2750, <8 x double> %2947
  %2949 = getelementptr inbounds nuw i8, ptr %2714, i64 6016
  store <8 x double> %2944, ptr %2949, align 64, !tbaa !26, !noalias !100
  %2950 = getelementptr inbounds nuw i8, ptr %2714, i64 5952
  store <8 x double> %2945, ptr %2950, align 64, !tbaa !26, !noalias !100
  %2951 = fmul <8 x double> %2708, %2896
  %2952 = fmul <8 x double> %2708, %2936
  %2953 = icmp eq <8 x i64> %2939, zeroinitializer
  %2954 = select <8 x i1> %2953, <8 x double> zeroinitializer, <8 x double> %2952
  %2955 = select <8 x i1> %2933, <8 x double> %2951, <8 x double> %2954
  %2956 = getelementptr inbounds nuw i8, ptr %2714, i64 6080
  store <8 x double> %2955, ptr %2956, align 64, !tbaa !26, !noalias !100
  %2957 = load i64, ptr %141, align 16, !tbaa !21, !noalias !100
  %2958 = sitofp i64 %2957 to double
  %2959 = insertelement <8 x double> poison, double %2958, i64 0
  %2960 = shufflevector <8 x double> %2959, <8 x double> poison, <8 x i32> zeroinitializer
  %2961 = select <8 x i1> %2943, <8 x double> %2960, <8 x double> %2891
  %2962 = getelementptr inbounds nuw i8, ptr %2714, i64 6144
  store <8 x double> %2961, ptr %2962, align 64, !tbaa !26, !noalias !100
  %2963 = getelementptr inbounds nuw i8, ptr %2714, i64 128
  %2964 = load <8 x double>, ptr %2963, align 64, !tbaa !26, !noalias !100
  %2965 = fadd <8 x double> %2944, %2955
  %2966 = fmul <8 x double> %2964, %2965
  %2967 = fmul <8 x double> %2964, %2948
  %2968 = fadd <8 x double> %2711, %2966
  %2969 = fadd <8 x double> %2710, %2967
  %2970 = add nuw nsw i64 %2712, 1
  %2971 = load i64, ptr %178, align 8, !tbaa !20, !noalias !100
  %2972 = icmp slt i64 %2970, %2971
  br i1 %2972, label %2709, label %2973, !llvm.loop !110

2973:                                             ; preds = %2890, %2667
  %2974 = phi <8 x double> [ zeroinitializer, %2667 ], [ %2968, %2890 ]
  %2975 = phi <8 x double> [ zeroinitializer, %2667 ], [ %2969, %2890 ]
  %2976 = fsub <8 x double> %2673, %2637
  %2977 = fcmp ogt <8 x double> %2976, zeroinitializer
  %2978 = select <8 x i1> %2977, <8 x double> %2976, <8 x double> zeroinitializer
  %2979 = fadd <8 x double> %2702, splat (double 2.731500e+02)
  %2980 = fdiv <8 x double> %2978, splat (double 4.615260e+02)
  %2981 = fadd <8 x double> %2664, %2980
  %2982 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2983 = fdiv <8 x double> %2981, %2982
  %2984 = fmul <8 x double> %2982, %2983
  %2985 = fdiv <8 x double> %2673, %2984
  %2986 = load <8 x double>, ptr %200, align 64, !tbaa !26, !noalias !111
  %2987 = fsub <8 x double> %2673, %2986
  %2988 = load <8 x double>, ptr %213, align 64, !tbaa !26, !noalias !111
  %2989 = fsub <8 x double> %2987, %2988
  %2990 = load <8 x double>, ptr %214, align 64, !tbaa !26, !noalias !111
  %2991 = load <8 x double>, ptr %160, align 64, !tbaa !26, !noalias !111
  %2992 = fcmp une <8 x double> %2991, splat (double 2.000000e+00)
  %2993 = load <8 x double>, ptr %215, align 64, !tbaa !26, !noalias !111
  %2994 = select <8 x i1> %2992, <8 x double> zeroinitializer, <8 x double> %2993
  %2995 = fadd <8 x double> %2990, %2994
  %2996 = fcmp ule <8 x double> %2987, zeroinitializer
  %2997 = fcmp ule <8 x double> %2995, zeroinitializer
  %2998 = or <8 x i1> %2996, %2997
  %2999 = fmul <8 x double> %2983, splat (double 2.000000e+00)
  %3000 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2999)
  %3001 = fmul <8 x double> %3000, %2995
  %3002 = fadd <8 x double> %2987, splat (double 2.000000e+02)
  %3003 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3002)
  %3004 = select <8 x i1> %2996, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3003
  %3005 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2987, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3006 = fmul <8 x double> %3005, %3001
  %3007 = fmul <8 x double> %3004, %3004
  %3008 = fmul <8 x double> %3004, %3007
  %3009 = fdiv <8 x double> %3006, %3008
  %3010 = fmul <8 x double> %2987, %3001
  %3011 = fdiv <8 x double> %3010, %3004
  %3012 = select <8 x i1> %2998, <8 x double> zeroinitializer, <8 x double> %3011
  %3013 = select <8 x i1> %2998, <8 x double> zeroinitializer, <8 x double> %3009
  %3014 = fcmp ule <8 x double> %2989, zeroinitializer
  %3015 = load <8 x double>, ptr %216, align 64, !tbaa !26, !noalias !111
  %3016 = fmul <8 x double> %2989, %3015
  %3017 = select <8 x i1> %3014, <8 x double> zeroinitializer, <8 x double> %3016
  %3018 = fadd <8 x double> %3017, %3012
  %3019 = select <8 x i1> %3014, <8 x double> zeroinitializer, <8 x double> %3015
  %3020 = fadd <8 x double> %3019, %3013
  %3021 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %3022 = fsub <8 x double> %2986, %2673
  %3023 = fcmp ule <8 x double> %3022, zeroinitializer
  %3024 = fcmp ule <8 x double> %3021, zeroinitializer
  %3025 = or <8 x i1> %3023, %3024
  %3026 = fmul <8 x double> %2666, %3021
  %3027 = fadd <8 x double> %3022, splat (double 2.000000e+02)
  %3028 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3027)
  %3029 = select <8 x i1> %3023, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3028
  %3030 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3022, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3031 = fmul <8 x double> %3030, %3026
  %3032 = fmul <8 x double> %3029, %3029
  %3033 = fmul <8 x double> %3029, %3032
  %3034 = fdiv <8 x double> %3031, %3033
  %3035 = fmul <8 x double> %3022, %3026
  %3036 = fdiv <8 x double> %3035, %3029
  %3037 = load <8 x double>, ptr %185, align 64, !tbaa !26, !noalias !114
  %3038 = load <8 x double>, ptr %202, align 64, !tbaa !26, !noalias !114
  %3039 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !114
  %3040 = load <8 x double>, ptr %203, align 64, !tbaa !26, !noalias !114
  %3041 = fmul <8 x double> %3039, %3040
  %3042 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3037, <8 x double> %3038, <8 x double> %3041)
  %3043 = load <8 x double>, ptr %206, align 64, !tbaa !26, !noalias !114
  %3044 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !114
  %3045 = load <8 x double>, ptr %204, align 64, !tbaa !26, !noalias !114
  %3046 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3043, <8 x double> %3044, <8 x double> %3045)
  %3047 = load <8 x double>, ptr %205, align 64, !tbaa !26, !noalias !114
  %3048 = fneg <8 x double> %3042
  %3049 = fmul <8 x double> %3043, %3048
  %3050 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3045, <8 x double> %3047, <8 x double> %3049)
  %3051 = fdiv <8 x double> %3050, %3046
  %3052 = fcmp ogt <8 x double> %2978, splat (double 2.000000e+03)
  %3053 = select <8 x i1> %3052, <8 x double> %2978, <8 x double> splat (double 2.000000e+03)
  %3054 = fmul <8 x double> %3053, splat (double 0x3EB0C6F7A0B5ED8D)
  %3055 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3054)
  %3056 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3055)
  %3057 = fmul <8 x double> %3056, %3056
  %3058 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3056, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3057)
  %3059 = fadd <8 x double> %3058, splat (double 0x402DD4891DBECC6B)
  %3060 = fmul <8 x double> %3056, splat (double 0x40C77A698FD9BCCA)
  %3061 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3057, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3060)
  %3062 = fadd <8 x double> %3061, splat (double 0xC0B2D7440748F0B3)
  %3063 = fmul <8 x double> %3056, splat (double 0xC148A99584203885)
  %3064 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3057, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3063)
  %3065 = fadd <8 x double> %3064, splat (double 0x4118B9E59F2691E5)
  %3066 = fmul <8 x double> %3065, splat (double 2.000000e+00)
  %3067 = fneg <8 x double> %3062
  %3068 = fmul <8 x double> %3059, splat (double 4.000000e+00)
  %3069 = fneg <8 x double> %3065
  %3070 = fmul <8 x double> %3068, %3069
  %3071 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3062, <8 x double> %3062, <8 x double> %3070)
  %3072 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3071)
  %3073 = fsub <8 x double> %3067, %3072
  %3074 = fdiv <8 x double> %3066, %3073
  %3075 = fadd <8 x double> %3074, splat (double 0x408451671D164BD4)
  %3076 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3074, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3077 = fmul <8 x double> %3076, splat (double -4.000000e+00)
  %3078 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3075, <8 x double> %3075, <8 x double> %3077)
  %3079 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3078)
  %3080 = fsub <8 x double> %3075, %3079
  %3081 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3080, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3082 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3081, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3083 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3081, <8 x double> %3082, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3084 = fadd <8 x double> %3081, splat (double 2.731500e+02)
  %3085 = fcmp ule <8 x double> %3081, %3051
  %3086 = load <8 x double>, ptr %218, align 64, !tbaa !26, !noalias !114
  %3087 = fmul <8 x double> %3046, %3086
  %3088 = fadd <8 x double> %3046, %3086
  %3089 = fdiv <8 x double> %3087, %3088
  %3090 = fdiv <8 x double> %3089, %3083
  %3091 = fmul <8 x double> %3084, splat (double 4.615260e+02)
  %3092 = fmul <8 x double> %3053, %3083
  %3093 = fmul <8 x double> %3081, %3086
  %3094 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3051, <8 x double> %3046, <8 x double> %3093)
  %3095 = fdiv <8 x double> %3094, %3088
  %3096 = select <8 x i1> %3085, <8 x double> %3051, <8 x double> %3095
  store <8 x double> %3096, ptr %208, align 64, !tbaa !26, !noalias !114
  %3097 = fsub <8 x double> %3081, %3051
  %3098 = fmul <8 x double> %3097, %3090
  %3099 = select <8 x i1> %3085, <8 x double> zeroinitializer, <8 x double> %3098
  %3100 = fmul <8 x double> %2979, splat (double 4.615260e+02)
  %3101 = fmul <8 x double> %2979, %3100
  %3102 = fmul <8 x double> %2673, %2704
  %3103 = fdiv <8 x double> %3101, %3102
  %3104 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3044, <8 x double> %2673, <8 x double> %2648)
  %3105 = fsub <8 x double> %2974, %3099
  %3106 = fmul <8 x double> %3105, splat (double -4.615260e+02)
  %3107 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2651, <8 x double> %3104, <8 x double> %3106)
  %3108 = fmul <8 x double> %3036, splat (double -2.870530e+02)
  %3109 = select <8 x i1> %3025, <8 x double> splat (double -0.000000e+00), <8 x double> %3108
  %3110 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2985, <8 x double> %3018, <8 x double> %3109)
  %3111 = fadd <8 x double> %3110, %3107
  %3112 = fneg <8 x double> %3084
  %3113 = fmul <8 x double> %3091, %3112
  %3114 = fdiv <8 x double> %3113, %3092
  %3115 = fmul <8 x double> %3114, %3090
  %3116 = select <8 x i1> %3085, <8 x double> splat (double -0.000000e+00), <8 x double> %3115
  %3117 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2975, <8 x double> %3103, <8 x double> %3116)
  %3118 = fmul <8 x double> %3117, splat (double -4.615260e+02)
  %3119 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2651, <8 x double> %3044, <8 x double> %3118)
  %3120 = fmul <8 x double> %3034, splat (double 2.870530e+02)
  %3121 = select <8 x i1> %3025, <8 x double> zeroinitializer, <8 x double> %3120
  %3122 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2985, <8 x double> %3020, <8 x double> %3121)
  %3123 = fadd <8 x double> %3122, %3119
  %3124 = fcmp ule <8 x double> %3111, zeroinitializer
  %3125 = fcmp olt <8 x double> %2670, %2673
  %3126 = select <8 x i1> %3124, <8 x i1> splat (i1 true), <8 x i1> %3125
  %3127 = select <8 x i1> %3126, <8 x double> %2670, <8 x double> %2673
  %3128 = fcmp ogt <8 x double> %2669, %2673
  %3129 = select <8 x i1> %3128, <8 x double> %2669, <8 x double> %2673
  %3130 = select <8 x i1> %3124, <8 x double> %3129, <8 x double> %2669
  %3131 = fdiv <8 x double> %3111, %3123
  %3132 = fsub <8 x double> %2673, %3131
  %3133 = fsub <8 x double> %3132, %2673
  %3134 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3133)
  %3135 = fcmp uge <8 x double> %3134, splat (double 2.000000e-01)
  %3136 = fcmp uge <8 x double> %3130, %3132
  %3137 = fcmp uge <8 x double> %3132, %3127
  %3138 = or <8 x i1> %3136, %3137
  %3139 = and <8 x i1> %3135, %3138
  %3140 = fadd <8 x double> %3130, %3127
  %3141 = fmul <8 x double> %3140, splat (double 5.000000e-01)
  %3142 = select <8 x i1> %3139, <8 x double> %3141, <8 x double> %3132
  %3143 = fsub <8 x double> %3142, %2673
  %3144 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3143)
  %3145 = fcmp oge <8 x double> %3144, splat (double 2.000000e-01)
  %3146 = select <8 x i1> %3145, <8 x i64> %2671, <8 x i64> zeroinitializer
  %3147 = icmp eq <8 x i64> %3146, zeroinitializer
  %3148 = select <8 x i1> %3147, <8 x double> %2673, <8 x double> %3142
  %3149 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3146)
  %3150 = icmp ne i64 %3149, 0
  %3151 = add nuw nsw i32 %2672, 1
  %3152 = icmp samesign ult i32 %2672, 59
  %3153 = select i1 %3150, i1 %3152, i1 false
  br i1 %3153, label %2667, label %3154, !llvm.loop !117

3154:                                             ; preds = %2973
  %3155 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3156 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %3157 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3158 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %3159 = fmul <8 x double> %3157, %3158
  %3160 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3155, <8 x double> %3156, <8 x double> %3159)
  %3161 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %3162 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %3163 = fsub <8 x double> %3162, %3148
  %3164 = fcmp ule <8 x double> %3163, zeroinitializer
  %3165 = fcmp ule <8 x double> %3161, zeroinitializer
  %3166 = or <8 x i1> %3165, %3164
  %3167 = fmul <8 x double> %2666, %3161
  %3168 = fadd <8 x double> %3163, splat (double 2.000000e+02)
  %3169 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3168)
  %3170 = select <8 x i1> %3164, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3169
  %3171 = fmul <8 x double> %3167, %3163
  %3172 = fdiv <8 x double> %3171, %3170
  %3173 = fmul <8 x double> %3172, splat (double 2.870530e+02)
  %3174 = select <8 x i1> %3166, <8 x double> zeroinitializer, <8 x double> %3173
  %3175 = fdiv <8 x double> %3174, %2651
  %3176 = fsub <8 x double> %3175, %3160
  %3177 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3178 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %3179 = fmul <8 x double> %2983, %3178
  %3180 = fdiv <8 x double> %3018, %3179
  %3181 = fadd <8 x double> %3177, %3180
  %3182 = fdiv <8 x double> %3176, %3181
  %3183 = fcmp ogt <8 x double> %3182, zeroinitializer
  %3184 = select <8 x i1> %3183, <8 x double> %3182, <8 x double> zeroinitializer
  %3185 = fcmp olt <8 x double> %3184, %3148
  %3186 = select <8 x i1> %3185, <8 x double> %3184, <8 x double> %3148
  %3187 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %3188 = select <8 x i1> %2662, <8 x double> %3187, <8 x double> %3186
  store <8 x double> %3188, ptr %207, align 64, !tbaa !26
  %3189 = select <8 x i1> %2662, <8 x double> %2639, <8 x double> %3096
  store <8 x double> %3189, ptr %208, align 64, !tbaa !26
  store <8 x double> %3148, ptr %201, align 64, !tbaa !26
  store <8 x double> %2702, ptr %221, align 64, !tbaa !26
  %3190 = load i64, ptr %178, align 8, !tbaa !20
  br label %3445

3191:                                             ; preds = %2618
  store <8 x double> %2620, ptr %221, align 64, !tbaa !26
  br i1 %2382, label %3192, label %3448

3192:                                             ; preds = %3191
  %3193 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2620, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3194 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2620, <8 x double> %3193, <8 x double> splat (double 0x4142F8368A3D70A4))
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
  %3207 = fmul <8 x double> %2620, %3203
  %3208 = fcmp ogt <8 x double> %3201, %3207
  %3209 = and <8 x i1> %3206, %3208
  %3210 = fneg <8 x double> %3203
  %3211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3210, <8 x double> %2620, <8 x double> %3201)
  %3212 = fmul <8 x double> %3195, %3211
  %3213 = select <8 x i1> %3209, <8 x double> %3212, <8 x double> zeroinitializer
  %3214 = fdiv <8 x double> %3201, %3203
  %3215 = select <8 x i1> %3209, <8 x double> %2620, <8 x double> %3214
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
  %3236 = fcmp ole <8 x double> %2620, %3235
  %3237 = getelementptr inbounds nuw i8, ptr %3199, i64 8192
  %3238 = load <8 x double>, ptr %3237, align 64, !tbaa !26, !noalias !121
  %3239 = fcmp oge <8 x double> %2620, %3238
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
  %3282 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3281, <8 x double> %2620, <8 x double> %3279)
  %3283 = fsub <8 x double> %3282, %2620
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
  %3322 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3321, <8 x double> %2620, <8 x double> %3318)
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
  %3354 = fsub <8 x double> %2620, %3353
  %3355 = fcmp ogt <8 x double> %3349, splat (double 1.000000e-09)
  %3356 = select <8 x i1> %3355, <8 x double> %3349, <8 x double> splat (double 1.000000e-09)
  %3357 = fdiv <8 x double> %3350, %3356
  %3358 = fadd <8 x double> %2620, %3357
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
  %3369 = select <8 x i1> %3240, <8 x double> %2620, <8 x double> %3368
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
  %3377 = fsub <8 x double> %2620, %3374
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
  %3405 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3404, <8 x double> %2620, <8 x double> %3397)
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
  %3427 = select <8 x i1> %3425, <8 x double> %3232, <8 x double> %2620
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

3445:                                             ; preds = %3372, %3154
  %3446 = phi i64 [ %3190, %3154 ], [ %3443, %3372 ]
  %3447 = icmp sgt i64 %3446, 0
  br i1 %3447, label %3575, label %3448

3448:                                             ; preds = %3445, %3191
  %3449 = load <8 x double>, ptr %187, align 64, !tbaa !26
  br label %3477

3450:                                             ; preds = %3647
  %3451 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3452 = icmp sgt i64 %3671, 0
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
  %3476 = icmp eq i64 %3475, %3671
  br i1 %3476, label %3477, label %3455, !llvm.loop !127

3477:                                             ; preds = %3455, %3448, %3450
  %3478 = phi i1 [ false, %3450 ], [ false, %3448 ], [ true, %3455 ]
  %3479 = phi <8 x double> [ %3451, %3450 ], [ %3449, %3448 ], [ %3451, %3455 ]
  %3480 = phi <8 x double> [ zeroinitializer, %3450 ], [ zeroinitializer, %3448 ], [ %3474, %3455 ]
  %3481 = phi <8 x double> [ zeroinitializer, %3450 ], [ zeroinitializer, %3448 ], [ %3469, %3455 ]
  %3482 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %3483 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %3484 = fsub <8 x double> %3479, %3483
  %3485 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3482, <8 x double> %3484, <8 x double> %3481)
  %3486 = fadd <8 x double> %3480, %3482
  store <8 x double> %3485, ptr %223, align 64, !tbaa !26
  %3487 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %3488 = fcmp ule <8 x double> %3487, zeroinitializer
  %3489 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3490 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3487, <8 x double> splat (double 5.000000e-01), <8 x double> %3489)
  %3491 = fsub <8 x double> %3490, %3479
  %3492 = fcmp ogt <8 x double> %3487, splat (double 1.000000e-30)
  %3493 = select <8 x i1> %3492, <8 x double> %3487, <8 x double> splat (double 1.000000e-30)
  %3494 = fdiv <8 x double> %3491, %3493
  %3495 = fcmp ogt <8 x double> %3494, zeroinitializer
  %3496 = select <8 x i1> %3495, <8 x double> %3494, <8 x double> zeroinitializer
  %3497 = fcmp olt <8 x double> %3496, splat (double 1.000000e+00)
  %3498 = select <8 x i1> %3497, <8 x double> %3496, <8 x double> splat (double 1.000000e+00)
  %3499 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %3500 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %3501 = icmp eq <8 x i64> %3500, zeroinitializer
  %3502 = select <8 x i1> %3501, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %3503 = select <8 x i1> %3488, <8 x double> %3502, <8 x double> %3498
  %3504 = fmul <8 x double> %3499, %3503
  %3505 = fcmp ule <8 x double> %3504, zeroinitializer
  %3506 = fcmp uge <8 x double> %3504, %3499
  %3507 = or <8 x i1> %3505, %3506
  %3508 = or <8 x i1> %3488, %3507
  %3509 = fdiv <8 x double> %3499, %3493
  %3510 = select <8 x i1> %3508, <8 x double> zeroinitializer, <8 x double> %3509
  %3511 = fadd <8 x double> %3486, %3510
  %3512 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %3513 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3514 = fdiv <8 x double> splat (double 2.000000e+00), %3513
  %3515 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %3516 = icmp eq <8 x i64> %3512, zeroinitializer
  %3517 = select <8 x i1> %3516, <8 x double> %3515, <8 x double> %3514
  %3518 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3519 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %3520 = fmul <8 x double> %3518, %3519
  %3521 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %3522 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %3523 = fmul <8 x double> %3522, splat (double 5.000000e-01)
  %3524 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3523, <8 x double> %3518, <8 x double> %3521)
  %3525 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %3526 = fmul <8 x double> %3518, %3525
  %3527 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3520, <8 x double> %3524, <8 x double> %3526)
  %3528 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3529 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3530 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %3531 = fmul <8 x double> %3519, %3530
  %3532 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3523, <8 x double> %3530, <8 x double> %3521)
  %3533 = fmul <8 x double> %3525, %3530
  %3534 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3531, <8 x double> %3532, <8 x double> %3533)
  %3535 = fmul <8 x double> %3529, %3534
  %3536 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3528, <8 x double> %3527, <8 x double> %3535)
  %3537 = fmul <8 x double> %3479, %3519
  %3538 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3523, <8 x double> %3479, <8 x double> %3521)
  %3539 = fmul <8 x double> %3479, %3525
  %3540 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3537, <8 x double> %3538, <8 x double> %3539)
  %3541 = fneg <8 x double> %3517
  %3542 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %3543 = fneg <8 x double> %3542
  %3544 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3541, <8 x double> %3527, <8 x double> %3543)
  %3545 = select <8 x i1> %3516, <8 x double> %3536, <8 x double> %3544
  %3546 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3517, <8 x double> %3540, <8 x double> %3545)
  %3547 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3522, <8 x double> %3479, <8 x double> %3521)
  %3548 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3519, <8 x double> %3547, <8 x double> %3525)
  %3549 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %3550 = fcmp une <8 x double> %3549, zeroinitializer
  %3551 = fadd <8 x double> %3485, %3546
  %3552 = fsub <8 x double> %3551, %3504
  %3553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3517, <8 x double> %3548, <8 x double> %3511)
  %3554 = fdiv <8 x double> %3552, %3553
  %3555 = fsub <8 x double> %3479, %3554
  %3556 = select <8 x i1> %3550, <8 x double> %3479, <8 x double> %3555
  store <8 x double> %3556, ptr %187, align 64, !tbaa !26
  %3557 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %3558 = fneg <8 x double> %3528
  %3559 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3558, <8 x double> %3557, <8 x double> %3504)
  %3560 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %3561 = fneg <8 x double> %3529
  %3562 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3561, <8 x double> %3560, <8 x double> %3559)
  %3563 = fdiv <8 x double> %3562, %3515
  %3564 = load <8 x double>, ptr %226, align 64, !tbaa !26
  %3565 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3558, <8 x double> %3564, <8 x double> %3485)
  %3566 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %3567 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3561, <8 x double> %3566, <8 x double> %3565)
  %3568 = fdiv <8 x double> %3567, %3515
  %3569 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3504, <8 x double> %3513, <8 x double> %3557)
  %3570 = select <8 x i1> %3516, <8 x double> %3563, <8 x double> %3569
  %3571 = load <8 x double>, ptr %228, align 64, !tbaa !26
  %3572 = select <8 x i1> %3550, <8 x double> %3571, <8 x double> %3570
  store <8 x double> %3572, ptr %228, align 64, !tbaa !26
  %3573 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %3574 = select <8 x i1> %3550, <8 x double> %3573, <8 x double> %3568
  store <8 x double> %3574, ptr %229, align 64, !tbaa !26
  br i1 %3478, label %3673, label %3961

3575:                                             ; preds = %3445, %3647
  %3576 = phi i64 [ %3670, %3647 ], [ 0, %3445 ]
  %3577 = load ptr, ptr %151, align 8, !tbaa !28
  %3578 = getelementptr inbounds nuw %struct.Piece, ptr %3577, i64 %3576
  %3579 = getelementptr inbounds nuw i8, ptr %3578, i64 5952
  %3580 = load <8 x double>, ptr %3579, align 64, !tbaa !26
  %3581 = getelementptr inbounds nuw i8, ptr %3578, i64 6144
  %3582 = load <8 x double>, ptr %3581, align 64, !tbaa !26
  %3583 = getelementptr inbounds nuw i8, ptr %3578, i64 8568
  %3584 = load ptr, ptr %3583, align 8, !tbaa !88
  %3585 = getelementptr inbounds nuw i8, ptr %3578, i64 8576
  %3586 = load ptr, ptr %3585, align 64, !tbaa !89
  %3587 = getelementptr inbounds nuw i8, ptr %3578, i64 8520
  %3588 = load ptr, ptr %3587, align 8, !tbaa !59
  %3589 = load i64, ptr %141, align 16, !tbaa !21
  %3590 = icmp sgt i64 %3589, 0
  br i1 %3590, label %3606, label %3591

3591:                                             ; preds = %3606, %3575
  %3592 = getelementptr inbounds nuw i8, ptr %3578, i64 8320
  %3593 = load <8 x i64>, ptr %3592, align 64, !tbaa !26
  %3594 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3593)
  %3595 = icmp eq i64 %3594, 0
  %3596 = load i64, ptr %142, align 8, !tbaa !22
  %3597 = icmp sgt i64 %3596, 0
  br i1 %3595, label %3603, label %3598

3598:                                             ; preds = %3591
  br i1 %3597, label %3599, label %3647

3599:                                             ; preds = %3598
  %3600 = getelementptr inbounds nuw i8, ptr %3578, i64 8672
  %3601 = getelementptr inbounds nuw i8, ptr %3578, i64 8680
  %3602 = getelementptr inbounds nuw i8, ptr %3578, i64 8640
  br label %3622

3603:                                             ; preds = %3591
  br i1 %3597, label %3604, label %3647

3604:                                             ; preds = %3603
  %3605 = getelementptr inbounds nuw i8, ptr %3578, i64 8640
  br label %3640

3606:                                             ; preds = %3575, %3606
  %3607 = phi <8 x double> [ %3619, %3606 ], [ %3580, %3575 ]
  %3608 = phi i64 [ %3609, %3606 ], [ %3589, %3575 ]
  %3609 = add nsw i64 %3608, -1
  %3610 = uitofp nneg i64 %3609 to double
  %3611 = insertelement <8 x double> poison, double %3610, i64 0
  %3612 = shufflevector <8 x double> %3611, <8 x double> poison, <8 x i32> zeroinitializer
  %3613 = fcmp ugt <8 x double> %3582, %3612
  %3614 = getelementptr inbounds nuw <8 x double>, ptr %3584, i64 %3609
  %3615 = load <8 x double>, ptr %3614, align 64, !tbaa !26
  %3616 = getelementptr inbounds nuw <8 x double>, ptr %3586, i64 %3609
  %3617 = load <8 x double>, ptr %3616, align 64, !tbaa !26
  %3618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3617, <8 x double> %3607, <8 x double> %3615)
  %3619 = select <8 x i1> %3613, <8 x double> %3618, <8 x double> %3580
  %3620 = getelementptr inbounds nuw <8 x double>, ptr %3588, i64 %3609
  store <8 x double> %3619, ptr %3620, align 64, !tbaa !26
  %3621 = icmp samesign ugt i64 %3608, 1
  br i1 %3621, label %3606, label %3591, !llvm.loop !128

3622:                                             ; preds = %3599, %3622
  %3623 = phi i64 [ 0, %3599 ], [ %3637, %3622 ]
  %3624 = phi <8 x double> [ %3580, %3599 ], [ %3634, %3622 ]
  %3625 = load <8 x i64>, ptr %3592, align 64, !tbaa !26
  %3626 = load ptr, ptr %3600, align 32, !tbaa !94
  %3627 = getelementptr inbounds nuw <8 x double>, ptr %3626, i64 %3623
  %3628 = load <8 x double>, ptr %3627, align 64, !tbaa !26
  %3629 = load ptr, ptr %3601, align 8, !tbaa !95
  %3630 = getelementptr inbounds nuw <8 x double>, ptr %3629, i64 %3623
  %3631 = load <8 x double>, ptr %3630, align 64, !tbaa !26
  %3632 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3631, <8 x double> %3624, <8 x double> %3628)
  %3633 = icmp eq <8 x i64> %3625, zeroinitializer
  %3634 = select <8 x i1> %3633, <8 x double> %3580, <8 x double> %3632
  %3635 = load ptr, ptr %3602, align 64, !tbaa !129
  %3636 = getelementptr inbounds nuw <8 x double>, ptr %3635, i64 %3623
  store <8 x double> %3634, ptr %3636, align 64, !tbaa !26
  %3637 = add nuw nsw i64 %3623, 1
  %3638 = load i64, ptr %142, align 8, !tbaa !22
  %3639 = icmp slt i64 %3637, %3638
  br i1 %3639, label %3622, label %3647, !llvm.loop !130

3640:                                             ; preds = %3604, %3640
  %3641 = phi i64 [ 0, %3604 ], [ %3644, %3640 ]
  %3642 = load ptr, ptr %3605, align 64, !tbaa !129
  %3643 = getelementptr inbounds nuw <8 x double>, ptr %3642, i64 %3641
  store <8 x double> %3580, ptr %3643, align 64, !tbaa !26
  %3644 = add nuw nsw i64 %3641, 1
  %3645 = load i64, ptr %142, align 8, !tbaa !22
  %3646 = icmp slt i64 %3644, %3645
  br i1 %3646, label %3640, label %3647, !llvm.loop !131

3647:                                             ; preds = %3622, %3640, %3598, %3603
  %3648 = phi <8 x double> [ %3580, %3603 ], [ %3580, %3598 ], [ %3580, %3640 ], [ %3634, %3622 ]
  %3649 = load <8 x i64>, ptr %3592, align 64, !tbaa !26
  %3650 = getelementptr inbounds nuw i8, ptr %3578, i64 6656
  %3651 = load <8 x double>, ptr %3650, align 64, !tbaa !26
  %3652 = icmp eq <8 x i64> %3649, zeroinitializer
  %3653 = select <8 x i1> %3652, <8 x double> zeroinitializer, <8 x double> %3651
  %3654 = fsub <8 x double> splat (double 1.000000e+00), %3653
  %3655 = getelementptr inbounds nuw i8, ptr %3578, i64 5888
  %3656 = load <8 x double>, ptr %3655, align 64, !tbaa !26
  %3657 = fmul <8 x double> %3653, %3656
  %3658 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3654, <8 x double> %3648, <8 x double> %3657)
  %3659 = getelementptr inbounds nuw i8, ptr %3578, i64 6848
  store <8 x double> %3658, ptr %3659, align 64, !tbaa !26
  %3660 = getelementptr inbounds nuw i8, ptr %3578, i64 6592
  %3661 = load <8 x double>, ptr %3660, align 64, !tbaa !26
  %3662 = fsub <8 x double> %3656, %3648
  %3663 = fmul <8 x double> %3662, %3661
  %3664 = getelementptr inbounds nuw i8, ptr %3578, i64 6720
  store <8 x double> %3663, ptr %3664, align 64, !tbaa !26
  %3665 = getelementptr inbounds nuw i8, ptr %3578, i64 3200
  %3666 = load <8 x double>, ptr %3665, align 64, !tbaa !26
  %3667 = fdiv <8 x double> %3663, %3666
  %3668 = fsub <8 x double> %3656, %3667
  %3669 = getelementptr inbounds nuw i8, ptr %3578, i64 6784
  store <8 x double> %3668, ptr %3669, align 64, !tbaa !26
  %3670 = add nuw nsw i64 %3576, 1
  %3671 = load i64, ptr %178, align 8, !tbaa !20
  %3672 = icmp slt i64 %3670, %3671
  br i1 %3672, label %3575, label %3450, !llvm.loop !132

3673:                                             ; preds = %3477, %3895
  %3674 = phi i64 [ %3958, %3895 ], [ 0, %3477 ]
  %3675 = phi <8 x double> [ %3957, %3895 ], [ zeroinitializer, %3477 ]
  %3676 = load ptr, ptr %151, align 8, !tbaa !28
  %3677 = getelementptr inbounds nuw %struct.Piece, ptr %3676, i64 %3674
  %3678 = getelementptr inbounds nuw i8, ptr %3677, i64 6016
  %3679 = load <8 x double>, ptr %3678, align 64, !tbaa !26
  %3680 = getelementptr inbounds nuw i8, ptr %3677, i64 6080
  %3681 = load <8 x double>, ptr %3680, align 64, !tbaa !26
  %3682 = fadd <8 x double> %3679, %3681
  %3683 = getelementptr inbounds nuw i8, ptr %3677, i64 5952
  %3684 = load <8 x double>, ptr %3683, align 64, !tbaa !26
  %3685 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %3686 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3685, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3687 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3685, <8 x double> %3686, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3688 = getelementptr inbounds nuw i8, ptr %3677, i64 7168
  %3689 = load <8 x double>, ptr %3688, align 64, !tbaa !26
  %3690 = getelementptr inbounds nuw i8, ptr %3677, i64 1280
  %3691 = load <8 x double>, ptr %3690, align 64, !tbaa !26
  %3692 = fmul <8 x double> %3689, %3691
  %3693 = getelementptr inbounds nuw i8, ptr %3677, i64 6848
  %3694 = load <8 x double>, ptr %3693, align 64, !tbaa !26
  %3695 = fsub <8 x double> %3694, %3684
  %3696 = fmul <8 x double> %3692, %3695
  %3697 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3687, <8 x double> %3682, <8 x double> %3696)
  %3698 = getelementptr inbounds nuw i8, ptr %3677, i64 5696
  %3699 = load <8 x double>, ptr %3698, align 64, !tbaa !26, !noalias !133
  %3700 = getelementptr inbounds nuw i8, ptr %3677, i64 4160
  %3701 = load <8 x double>, ptr %3700, align 64, !tbaa !26, !noalias !133
  %3702 = fneg <8 x double> %3699
  %3703 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3702, <8 x double> %3701, <8 x double> %3682)
  %3704 = getelementptr inbounds nuw i8, ptr %3677, i64 5760
  %3705 = load <8 x double>, ptr %3704, align 64, !tbaa !26, !noalias !133
  %3706 = getelementptr inbounds nuw i8, ptr %3677, i64 5056
  %3707 = load <8 x double>, ptr %3706, align 64, !tbaa !26, !noalias !133
  %3708 = fneg <8 x double> %3705
  %3709 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3708, <8 x double> %3707, <8 x double> %3703)
  %3710 = getelementptr inbounds nuw i8, ptr %3677, i64 5632
  %3711 = load <8 x double>, ptr %3710, align 64, !tbaa !26, !noalias !133
  %3712 = fdiv <8 x double> %3709, %3711
  %3713 = getelementptr inbounds nuw i8, ptr %3677, i64 1600
  %3714 = load <8 x double>, ptr %3713, align 64, !tbaa !26, !noalias !133
  %3715 = fsub <8 x double> %3714, %3712
  %3716 = getelementptr inbounds nuw i8, ptr %3677, i64 4032
  %3717 = load <8 x double>, ptr %3716, align 64, !tbaa !26, !noalias !133
  %3718 = getelementptr inbounds nuw i8, ptr %3677, i64 7552
  %3719 = load <8 x double>, ptr %3718, align 64, !tbaa !26, !noalias !133
  %3720 = fsub <8 x double> %3717, %3719
  %3721 = getelementptr inbounds nuw i8, ptr %3677, i64 3904
  %3722 = load <8 x double>, ptr %3721, align 64, !tbaa !26, !noalias !133
  %3723 = getelementptr inbounds nuw i8, ptr %3677, i64 2944
  %3724 = load <8 x double>, ptr %3723, align 64, !tbaa !26, !noalias !133
  %3725 = getelementptr inbounds nuw i8, ptr %3677, i64 8320
  %3726 = load <8 x i64>, ptr %3725, align 64, !tbaa !26, !noalias !133
  %3727 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3726)
  %3728 = icmp eq i64 %3727, 0
  br i1 %3728, label %3857, label %3729

3729:                                             ; preds = %3673
  %3730 = fcmp ogt <8 x double> %3720, %3715
  %3731 = getelementptr inbounds nuw i8, ptr %3677, i64 7680
  %3732 = load <8 x double>, ptr %3731, align 64, !tbaa !26, !noalias !133
  %3733 = fcmp oeq <8 x double> %3732, zeroinitializer
  %3734 = select <8 x i1> %3733, <8 x i1> %3730, <8 x i1> zeroinitializer
  %3735 = select <8 x i1> %3734, <8 x i64> %3726, <8 x i64> zeroinitializer
  %3736 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3735)
  %3737 = icmp eq i64 %3736, 0
  br i1 %3737, label %3810, label %3738

3738:                                             ; preds = %3729
  %3739 = fsub <8 x double> %3720, %3715
  %3740 = getelementptr inbounds nuw i8, ptr %3677, i64 832
  %3741 = load <8 x double>, ptr %3740, align 64, !tbaa !26, !noalias !133
  %3742 = fdiv <8 x double> %3739, %3741
  %3743 = getelementptr inbounds nuw i8, ptr %3677, i64 8552
  %3744 = load ptr, ptr %3743, align 8, !tbaa !69, !noalias !133
  %3745 = load i64, ptr %141, align 16, !tbaa !21, !noalias !133
  %3746 = add nsw i64 %3745, -1
  %3747 = getelementptr inbounds <8 x double>, ptr %3744, i64 %3746
  %3748 = load <8 x double>, ptr %3747, align 64, !tbaa !26, !noalias !133
  %3749 = icmp sgt i64 %3745, 1
  br i1 %3749, label %3750, label %3802

3750:                                             ; preds = %3738
  %3751 = getelementptr inbounds nuw i8, ptr %3677, i64 8512
  %3752 = load i64, ptr %3751, align 64, !tbaa !31, !noalias !133
  %3753 = getelementptr inbounds nuw i8, ptr %3677, i64 4672
  %3754 = getelementptr inbounds nuw i8, ptr %3677, i64 1536
  %3755 = getelementptr inbounds nuw i8, ptr %3677, i64 8608
  br label %3756

3756:                                             ; preds = %3750, %3799
  %3757 = phi <8 x double> [ %3722, %3750 ], [ %3794, %3799 ]
  %3758 = phi i64 [ %3746, %3750 ], [ %3800, %3799 ]
  %3759 = phi <8 x double> [ %3748, %3750 ], [ %3782, %3799 ]
  %3760 = phi <8 x i64> [ %3735, %3750 ], [ %3786, %3799 ]
  %3761 = phi <8 x double> [ %3742, %3750 ], [ %3793, %3799 ]
  %3762 = icmp slt i64 %3758, %3752
  br i1 %3762, label %3763, label %3769

3763:                                             ; preds = %3756
  %3764 = load ptr, ptr %3755, align 32, !tbaa !74, !noalias !133
  %3765 = getelementptr inbounds nuw <8 x double>, ptr %3764, i64 %3758
  %3766 = load <8 x double>, ptr %3765, align 64, !tbaa !26, !noalias !133
  %3767 = load <8 x double>, ptr %3754, align 64, !tbaa !26, !noalias !133
  %3768 = fmul <8 x double> %3766, %3767
  br label %3777

3769:                                             ; preds = %3756
  %3770 = load <8 x double>, ptr %3753, align 64, !tbaa !26, !noalias !133
  %3771 = load <8 x double>, ptr %3754, align 64, !tbaa !26, !noalias !133
  %3772 = load ptr, ptr %3755, align 32, !tbaa !74, !noalias !133
  %3773 = getelementptr inbounds nuw <8 x double>, ptr %3772, i64 %3758
  %3774 = load <8 x double>, ptr %3773, align 64, !tbaa !26, !noalias !133
  %3775 = fsub <8 x double> %3770, %3771
  %3776 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3774, <8 x double> %3775, <8 x double> %3771)
  br label %3777

3777:                                             ; preds = %3769, %3763
  %3778 = phi <8 x double> [ %3768, %3763 ], [ %3776, %3769 ]
  %3779 = getelementptr inbounds nuw <8 x double>, ptr %3744, i64 %3758
  %3780 = load <8 x double>, ptr %3779, align 64, !tbaa !26, !noalias !133
  %3781 = icmp eq <8 x i64> %3760, zeroinitializer
  %3782 = select <8 x i1> %3781, <8 x double> %3759, <8 x double> %3780
  %3783 = fsub <8 x double> %3757, %3778
  %3784 = fmul <8 x double> %3783, %3782
  %3785 = fcmp olt <8 x double> %3784, %3761
  %3786 = select <8 x i1> %3785, <8 x i64> %3760, <8 x i64> zeroinitializer
  %3787 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3786)
  %3788 = icmp eq i64 %3787, 0
  br i1 %3788, label %3802, label %3789

3789:                                             ; preds = %3777
  %3790 = fneg <8 x double> %3782
  %3791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3790, <8 x double> %3783, <8 x double> %3761)
  %3792 = icmp eq <8 x i64> %3786, zeroinitializer
  %3793 = select <8 x i1> %3792, <8 x double> %3761, <8 x double> %3791
  %3794 = select <8 x i1> %3792, <8 x double> %3757, <8 x double> %3778
  %3795 = icmp eq i64 %3758, 1
  br i1 %3795, label %3796, label %3799

3796:                                             ; preds = %3789
  %3797 = load <8 x double>, ptr %3744, align 64, !tbaa !26, !noalias !133
  %3798 = select <8 x i1> %3792, <8 x double> %3782, <8 x double> %3797
  br label %3802

3799:                                             ; preds = %3789
  %3800 = add nsw i64 %3758, -1
  %3801 = icmp sgt i64 %3758, 1
  br i1 %3801, label %3756, label %3802, !llvm.loop !75

3802:                                             ; preds = %3799, %3777, %3796, %3738
  %3803 = phi <8 x double> [ %3742, %3738 ], [ %3793, %3796 ], [ %3761, %3777 ], [ %3793, %3799 ]
  %3804 = phi <8 x double> [ %3722, %3738 ], [ %3794, %3796 ], [ %3757, %3777 ], [ %3794, %3799 ]
  %3805 = phi <8 x double> [ %3748, %3738 ], [ %3798, %3796 ], [ %3782, %3777 ], [ %3782, %3799 ]
  %3806 = fdiv <8 x double> %3803, %3805
  %3807 = fsub <8 x double> %3804, %3806
  %3808 = icmp eq <8 x i64> %3735, zeroinitializer
  %3809 = select <8 x i1> %3808, <8 x double> %3722, <8 x double> %3807
  br label %3810

3810:                                             ; preds = %3802, %3729
  %3811 = phi <8 x double> [ %3809, %3802 ], [ %3722, %3729 ]
  %3812 = getelementptr inbounds nuw i8, ptr %3677, i64 2560
  %3813 = load <8 x double>, ptr %3812, align 64, !tbaa !26, !noalias !133
  %3814 = getelementptr inbounds nuw i8, ptr %3677, i64 2624
  %3815 = load <8 x double>, ptr %3814, align 64, !tbaa !26, !noalias !133
  %3816 = getelementptr inbounds nuw i8, ptr %3677, i64 2688
  %3817 = load <8 x double>, ptr %3816, align 64, !tbaa !26, !noalias !133
  %3818 = getelementptr inbounds nuw i8, ptr %3677, i64 2752
  %3819 = load <8 x double>, ptr %3818, align 64, !tbaa !26, !noalias !133
  %3820 = load <8 x double>, ptr %3677, align 64, !tbaa !26, !noalias !133
  %3821 = fmul <8 x double> %3820, splat (double 2.000000e-05)
  br label %3822

3822:                                             ; preds = %3810, %3822
  %3823 = phi <8 x i64> [ splat (i64 -1), %3810 ], [ %3840, %3822 ]
  %3824 = phi i32 [ 0, %3810 ], [ %3841, %3822 ]
  %3825 = phi <8 x double> [ %3724, %3810 ], [ %3837, %3822 ]
  %3826 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3825, <8 x double> %3819, <8 x double> %3817)
  %3827 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3825, <8 x double> %3826, <8 x double> %3815)
  %3828 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3825, <8 x double> %3827, <8 x double> %3813)
  %3829 = fsub <8 x double> %3828, %3811
  %3830 = fmul <8 x double> %3825, splat (double 3.000000e+00)
  %3831 = fmul <8 x double> %3830, %3819
  %3832 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3817, <8 x double> splat (double 2.000000e+00), <8 x double> %3831)
  %3833 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3825, <8 x double> %3832, <8 x double> %3815)
  %3834 = fdiv <8 x double> %3829, %3833
  %3835 = fsub <8 x double> %3825, %3834
  %3836 = icmp eq <8 x i64> %3823, zeroinitializer
  %3837 = select <8 x i1> %3836, <8 x double> %3825, <8 x double> %3835
  %3838 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3834)
  %3839 = fcmp oge <8 x double> %3838, %3821
  %3840 = select <8 x i1> %3839, <8 x i64> %3823, <8 x i64> zeroinitializer
  %3841 = add nuw nsw i32 %3824, 1
  %3842 = icmp samesign ult i32 %3824, 3
  %3843 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3840)
  %3844 = icmp ne i64 %3843, 0
  %3845 = select i1 %3842, i1 %3844, i1 false
  br i1 %3845, label %3822, label %3846, !llvm.loop !76

3846:                                             ; preds = %3822
  %3847 = fmul <8 x double> %3820, splat (double 2.800000e-01)
  %3848 = fcmp ogt <8 x double> %3837, %3847
  %3849 = select <8 x i1> %3848, <8 x double> %3837, <8 x double> %3847
  %3850 = fcmp olt <8 x double> %3849, %3820
  %3851 = select <8 x i1> %3850, <8 x double> %3849, <8 x double> %3820
  %3852 = icmp eq <8 x i64> %3726, zeroinitializer
  %3853 = select <8 x i1> %3852, <8 x double> %3724, <8 x double> %3851
  %3854 = fcmp olt <8 x double> %3720, %3715
  %3855 = select <8 x i1> %3852, <8 x i1> splat (i1 true), <8 x i1> %3854
  %3856 = select <8 x i1> %3855, <8 x double> %3720, <8 x double> %3715
  br label %3857

3857:                                             ; preds = %3846, %3673
  %3858 = phi <8 x double> [ %3856, %3846 ], [ %3720, %3673 ]
  %3859 = phi <8 x double> [ %3853, %3846 ], [ %3724, %3673 ]
  %3860 = phi <8 x double> [ %3811, %3846 ], [ %3722, %3673 ]
  %3861 = fsub <8 x double> %3715, %3858
  %3862 = fsub <8 x double> %3859, %3724
  %3863 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3862)
  %3864 = getelementptr inbounds nuw i8, ptr %3677, i64 3072
  %3865 = load <8 x double>, ptr %3864, align 64, !tbaa !26
  %3866 = fsub <8 x double> %3861, %3865
  %3867 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3866)
  %3868 = getelementptr inbounds nuw i8, ptr %3677, i64 832
  %3869 = load <8 x double>, ptr %3868, align 64, !tbaa !26
  %3870 = fdiv <8 x double> %3867, %3869
  %3871 = icmp eq <8 x i64> %3726, zeroinitializer
  %3872 = select <8 x i1> %3871, <8 x double> %3870, <8 x double> %3863
  br i1 %3728, label %3895, label %3873

3873:                                             ; preds = %3857
  %3874 = getelementptr inbounds nuw i8, ptr %3677, i64 7104
  %3875 = load <8 x double>, ptr %3874, align 64, !tbaa !26
  %3876 = fmul <8 x double> %3875, splat (double 2.000000e+00)
  %3877 = getelementptr inbounds nuw i8, ptr %3677, i64 384
  %3878 = load <8 x double>, ptr %3877, align 64, !tbaa !26
  %3879 = getelementptr inbounds nuw i8, ptr %3677, i64 448
  %3880 = load <8 x double>, ptr %3879, align 64, !tbaa !26
  %3881 = getelementptr inbounds nuw i8, ptr %3677, i64 512
  %3882 = load <8 x double>, ptr %3881, align 64, !tbaa !26
  %3883 = fmul <8 x double> %3684, %3882
  %3884 = fmul <8 x double> %3883, splat (double 0x3FD5555555555555)
  %3885 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3880, <8 x double> splat (double 5.000000e-01), <8 x double> %3884)
  %3886 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3684, <8 x double> %3885, <8 x double> %3878)
  %3887 = fmul <8 x double> %3684, %3886
  %3888 = getelementptr inbounds nuw i8, ptr %3677, i64 768
  %3889 = load <8 x double>, ptr %3888, align 64, !tbaa !26
  %3890 = fneg <8 x double> %3889
  %3891 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3890, <8 x double> %3684, <8 x double> %3887)
  %3892 = fmul <8 x double> %3876, %3891
  %3893 = fsub <8 x double> %3697, %3892
  %3894 = select <8 x i1> %3871, <8 x double> %3697, <8 x double> %3893
  br label %3895

3895:                                             ; preds = %3857, %3873
  %3896 = phi <8 x double> [ %3894, %3873 ], [ %3697, %3857 ]
  %3897 = getelementptr inbounds nuw i8, ptr %3677, i64 3264
  store <8 x double> %3712, ptr %3897, align 64, !tbaa !26
  store <8 x double> %3861, ptr %3864, align 64, !tbaa !26
  %3898 = getelementptr inbounds nuw i8, ptr %3677, i64 3136
  store <8 x double> %3858, ptr %3898, align 64, !tbaa !26
  %3899 = getelementptr inbounds nuw i8, ptr %3677, i64 3008
  %3900 = load <8 x double>, ptr %3899, align 64, !tbaa !26
  %3901 = select <8 x i1> %3871, <8 x double> %3900, <8 x double> %3860
  store <8 x double> %3901, ptr %3899, align 64, !tbaa !26
  %3902 = select <8 x i1> %3871, <8 x double> %3724, <8 x double> %3859
  store <8 x double> %3902, ptr %3723, align 64, !tbaa !26
  %3903 = getelementptr inbounds nuw i8, ptr %3677, i64 3520
  store <8 x double> %3681, ptr %3903, align 64, !tbaa !26
  %3904 = getelementptr inbounds nuw i8, ptr %3677, i64 3584
  store <8 x double> %3684, ptr %3904, align 64, !tbaa !26
  %3905 = getelementptr inbounds nuw i8, ptr %3677, i64 3200
  %3906 = load <8 x double>, ptr %3905, align 64, !tbaa !26
  %3907 = getelementptr inbounds nuw i8, ptr %3677, i64 5888
  %3908 = load <8 x double>, ptr %3907, align 64, !tbaa !26
  %3909 = fsub <8 x double> %3908, %3684
  %3910 = getelementptr inbounds nuw i8, ptr %3677, i64 8256
  %3911 = load <8 x double>, ptr %3910, align 64, !tbaa !26
  %3912 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3906, <8 x double> %3911, <8 x double> splat (double 1.000000e+00))
  %3913 = fdiv <8 x double> %3909, %3912
  %3914 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3684, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3915 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3684, <8 x double> %3914, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3916 = fneg <8 x double> %3679
  %3917 = fmul <8 x double> %3915, %3916
  %3918 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3906, <8 x double> %3913, <8 x double> %3917)
  %3919 = getelementptr inbounds nuw i8, ptr %3677, i64 3456
  store <8 x double> %3918, ptr %3919, align 64, !tbaa !26
  %3920 = getelementptr inbounds nuw i8, ptr %3677, i64 6784
  %3921 = load <8 x double>, ptr %3920, align 64, !tbaa !26
  %3922 = fsub <8 x double> %3908, %3921
  %3923 = fsub <8 x double> %3922, %3913
  %3924 = getelementptr inbounds nuw i8, ptr %3677, i64 3648
  store <8 x double> %3923, ptr %3924, align 64, !tbaa !26
  %3925 = getelementptr inbounds nuw i8, ptr %3677, i64 7360
  %3926 = load <8 x double>, ptr %3925, align 64, !tbaa !26
  %3927 = getelementptr inbounds nuw i8, ptr %3677, i64 7424
  %3928 = load <8 x double>, ptr %3927, align 64, !tbaa !26
  %3929 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3926, <8 x double> %3684, <8 x double> %3928)
  %3930 = getelementptr inbounds nuw i8, ptr %3677, i64 6720
  %3931 = load <8 x double>, ptr %3930, align 64, !tbaa !26
  %3932 = getelementptr inbounds nuw i8, ptr %3677, i64 4224
  %3933 = load <8 x double>, ptr %3932, align 64, !tbaa !26
  %3934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3702, <8 x double> %3933, <8 x double> %3931)
  %3935 = getelementptr inbounds nuw i8, ptr %3677, i64 5120
  %3936 = load <8 x double>, ptr %3935, align 64, !tbaa !26
  %3937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3708, <8 x double> %3936, <8 x double> %3934)
  %3938 = fdiv <8 x double> %3937, %3711
  %3939 = getelementptr inbounds nuw i8, ptr %3677, i64 3328
  store <8 x double> %3938, ptr %3939, align 64, !tbaa !26
  %3940 = getelementptr inbounds nuw i8, ptr %3677, i64 4288
  %3941 = load <8 x double>, ptr %3940, align 64, !tbaa !26
  %3942 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3702, <8 x double> %3941, <8 x double> %3896)
  %3943 = getelementptr inbounds nuw i8, ptr %3677, i64 5184
  %3944 = load <8 x double>, ptr %3943, align 64, !tbaa !26
  %3945 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3708, <8 x double> %3944, <8 x double> %3942)
  %3946 = fdiv <8 x double> %3945, %3711
  %3947 = getelementptr inbounds nuw i8, ptr %3677, i64 3392
  store <8 x double> %3946, ptr %3947, align 64, !tbaa !26
  %3948 = getelementptr inbounds nuw i8, ptr %3677, i64 4608
  %3949 = load <8 x double>, ptr %3948, align 64, !tbaa !26
  %3950 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3702, <8 x double> %3949, <8 x double> %3929)
  %3951 = getelementptr inbounds nuw i8, ptr %3677, i64 5504
  %3952 = load <8 x double>, ptr %3951, align 64, !tbaa !26
  %3953 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3708, <8 x double> %3952, <8 x double> %3950)
  %3954 = fdiv <8 x double> %3953, %3711
  %3955 = getelementptr inbounds nuw i8, ptr %3677, i64 3712
  store <8 x double> %3954, ptr %3955, align 64, !tbaa !26
  %3956 = fcmp ogt <8 x double> %3675, %3872
  %3957 = select <8 x i1> %3956, <8 x double> %3675, <8 x double> %3872
  %3958 = add nuw nsw i64 %3674, 1
  %3959 = load i64, ptr %178, align 8, !tbaa !20
  %3960 = icmp slt i64 %3958, %3959
  br i1 %3960, label %3673, label %3961, !llvm.loop !136

3961:                                             ; preds = %3895, %3477
  %3962 = phi <8 x double> [ zeroinitializer, %3477 ], [ %3957, %3895 ]
  %3963 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %3964 = fadd <8 x double> %3963, splat (double 1.000000e+00)
  store <8 x double> %3964, ptr %195, align 64, !tbaa !26
  %3965 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %3966 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %3967 = fcmp olt <8 x double> %3962, %3966
  %3968 = load i64, ptr %231, align 32, !tbaa !24
  %3969 = sitofp i64 %3968 to double
  %3970 = insertelement <8 x double> poison, double %3969, i64 0
  %3971 = shufflevector <8 x double> %3970, <8 x double> poison, <8 x i32> zeroinitializer
  %3972 = fcmp oge <8 x double> %3964, %3971
  %3973 = or <8 x i1> %3967, %3972
  %3974 = select <8 x i1> %3973, <8 x i64> %3965, <8 x i64> zeroinitializer
  store <8 x i64> %3974, ptr %155, align 64, !tbaa !26
  %3975 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3974)
  %3976 = icmp eq i64 %3975, 0
  br i1 %3976, label %549, label %3977, !llvm.loop !56

3977:                                             ; preds = %3961
  %3978 = load i64, ptr %178, align 8, !tbaa !20
  %3979 = icmp sgt i64 %3978, 0
  br i1 %3979, label %3980, label %3982

3980:                                             ; preds = %3977
  %3981 = icmp eq <8 x i64> %3974, zeroinitializer
  br label %4287

3982:                                             ; preds = %4335, %3977
  %3983 = phi i64 [ %3978, %3977 ], [ %4341, %4335 ]
  %3984 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3985 = fadd <8 x double> %3984, splat (double 1.000000e+00)
  %3986 = icmp eq <8 x i64> %3974, zeroinitializer
  %3987 = select <8 x i1> %3986, <8 x double> %3984, <8 x double> %3985
  store <8 x double> %3987, ptr %183, align 64, !tbaa !26
  %3988 = fcmp ogt <8 x double> %3987, splat (double 4.000000e+01)
  %3989 = select <8 x i1> %3988, <8 x i64> %3974, <8 x i64> zeroinitializer
  %3990 = xor <8 x i64> %3989, %3974
  %3991 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %3992 = fadd <8 x double> %3991, splat (double 1.000000e+00)
  %3993 = icmp eq <8 x i64> %3989, zeroinitializer
  %3994 = select <8 x i1> %3993, <8 x double> %3991, <8 x double> %3992
  store <8 x double> %3994, ptr %149, align 64, !tbaa !26
  %3995 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %3996 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %3997 = fsub <8 x double> %3995, %3996
  %3998 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3997)
  %3999 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4000 = fmul <8 x double> %3999, splat (double 1.500000e+00)
  %4001 = fcmp ogt <8 x double> %3998, %4000
  %4002 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4003 = fcmp ogt <8 x double> %4002, splat (double 2.000000e-03)
  %4004 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4005 = fcmp oeq <8 x double> %4004, zeroinitializer
  %4006 = and <8 x i1> %4001, %4005
  %4007 = and <8 x i1> %4003, %4006
  %4008 = fdiv <8 x double> %3999, %3998
  %4009 = select <8 x i1> %4007, <8 x i64> %3990, <8 x i64> zeroinitializer
  %4010 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4011 = fcmp ogt <8 x double> %4010, %4002
  %4012 = select <8 x i1> %4011, <8 x double> %4010, <8 x double> %4002
  %4013 = select <8 x i1> %4007, <8 x double> zeroinitializer, <8 x double> %4012
  %4014 = icmp eq <8 x i64> %4009, zeroinitializer
  %4015 = select <8 x i1> %4014, <8 x double> %4010, <8 x double> %4013
  store <8 x double> %4015, ptr %181, align 64, !tbaa !26
  %4016 = fcmp ogt <8 x double> %4008, splat (double 5.000000e-02)
  %4017 = select <8 x i1> %4016, <8 x double> %4008, <8 x double> splat (double 5.000000e-02)
  %4018 = fcmp olt <8 x double> %4017, splat (double 0x3FEE666666666666)
  %4019 = select <8 x i1> %4018, <8 x double> %4017, <8 x double> splat (double 0x3FEE666666666666)
  %4020 = fmul <8 x double> %4002, %4019
  %4021 = fcmp ogt <8 x double> %4020, splat (double 0x3EB0C6F7A0B5ED8D)
  %4022 = select <8 x i1> %4021, <8 x double> %4020, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4023 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4024 = select <8 x i1> %4014, <8 x double> %4023, <8 x double> %4022
  store <8 x double> %4024, ptr %161, align 64, !tbaa !26
  %4025 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4026 = fadd <8 x double> %4025, splat (double 1.000000e+00)
  %4027 = select <8 x i1> %4014, <8 x double> %4025, <8 x double> %4026
  store <8 x double> %4027, ptr %146, align 64, !tbaa !26
  %4028 = xor <8 x i64> %4009, %3990
  %4029 = icmp sgt i64 %3983, 0
  br i1 %4029, label %4030, label %4128

4030:                                             ; preds = %3982
  %4031 = load ptr, ptr %151, align 8, !tbaa !28
  %4032 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4033 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4034 = fcmp une <8 x double> %4032, %4033
  %4035 = fcmp ule <8 x double> %4032, zeroinitializer
  %4036 = or <8 x i1> %4035, %4034
  %4037 = fcmp ogt <8 x double> %4002, splat (double 0x3E7AD7F29ABCAF48)
  %4038 = fcmp ogt <8 x double> %4002, splat (double 1.000000e-05)
  %4039 = fcmp ogt <8 x double> %4002, splat (double 1.000000e-04)
  br label %4040

4040:                                             ; preds = %4030, %4040
  %4041 = phi i64 [ 0, %4030 ], [ %4124, %4040 ]
  %4042 = phi <8 x double> [ splat (double 1.000000e+00), %4030 ], [ %4123, %4040 ]
  %4043 = phi <8 x i64> [ zeroinitializer, %4030 ], [ %4071, %4040 ]
  %4044 = phi <8 x i64> [ zeroinitializer, %4030 ], [ %4120, %4040 ]
  %4045 = getelementptr inbounds nuw %struct.Piece, ptr %4031, i64 %4041
  %4046 = getelementptr inbounds nuw i8, ptr %4045, i64 3072
  %4047 = load <8 x double>, ptr %4046, align 64, !tbaa !26
  %4048 = getelementptr inbounds nuw i8, ptr %4045, i64 3968
  %4049 = load <8 x double>, ptr %4048, align 64, !tbaa !26
  %4050 = getelementptr inbounds nuw i8, ptr %4045, i64 8320
  %4051 = load <8 x i64>, ptr %4050, align 64, !tbaa !26
  %4052 = xor <8 x i64> %4051, splat (i64 -1)
  %4053 = getelementptr inbounds nuw i8, ptr %4045, i64 896
  %4054 = load <8 x double>, ptr %4053, align 64, !tbaa !26
  %4055 = fmul <8 x double> %4054, splat (double 3.000000e-03)
  %4056 = fcmp ogt <8 x double> %4055, splat (double 0x3E7AD7F29ABCAF48)
  %4057 = fneg <8 x double> %4055
  %4058 = select <8 x i1> %4056, <8 x double> %4057, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4059 = fcmp olt <8 x double> %4047, %4058
  %4060 = select <8 x i1> %4059, <8 x i1> %4036, <8 x i1> zeroinitializer
  %4061 = select <8 x i1> %4060, <8 x i64> %4052, <8 x i64> zeroinitializer
  %4062 = fcmp ole <8 x double> %4049, zeroinitializer
  %4063 = select <8 x i1> %4062, <8 x i64> %4061, <8 x i64> zeroinitializer
  %4064 = getelementptr inbounds nuw i8, ptr %4045, i64 832
  %4065 = load <8 x double>, ptr %4064, align 64, !tbaa !26
  %4066 = fmul <8 x double> %4065, splat (double -3.000000e-07)
  %4067 = fcmp olt <8 x double> %4047, %4066
  %4068 = select <8 x i1> %4037, <8 x i1> %4067, <8 x i1> zeroinitializer
  %4069 = select <8 x i1> %4068, <8 x i64> %4063, <8 x i64> zeroinitializer
  %4070 = or <8 x i64> %4069, %4044
  %4071 = or <8 x i64> %4069, %4043
  %4072 = fcmp olt <8 x double> %4042, splat (double 3.000000e-01)
  %4073 = icmp eq <8 x i64> %4069, zeroinitializer
  %4074 = select <8 x i1> %4073, <8 x i1> splat (i1 true), <8 x i1> %4072
  %4075 = select <8 x i1> %4074, <8 x double> %4042, <8 x double> splat (double 3.000000e-01)
  %4076 = xor <8 x i64> %4063, splat (i64 -1)
  %4077 = and <8 x i64> %4061, %4076
  %4078 = select <8 x i1> %4038, <8 x i64> %4077, <8 x i64> zeroinitializer
  %4079 = fsub <8 x double> %4049, %4047
  %4080 = fdiv <8 x double> %4049, %4079
  %4081 = or <8 x i64> %4070, %4078
  %4082 = fcmp olt <8 x double> %4075, %4080
  %4083 = icmp eq <8 x i64> %4078, zeroinitializer
  %4084 = select <8 x i1> %4083, <8 x i1> splat (i1 true), <8 x i1> %4082
  %4085 = select <8 x i1> %4084, <8 x double> %4075, <8 x double> %4080
  %4086 = getelementptr inbounds nuw i8, ptr %4045, i64 3904
  %4087 = load <8 x double>, ptr %4086, align 64, !tbaa !26
  %4088 = getelementptr inbounds nuw i8, ptr %4045, i64 3008
  %4089 = load <8 x double>, ptr %4088, align 64, !tbaa !26
  %4090 = getelementptr inbounds nuw i8, ptr %4045, i64 7680
  %4091 = load <8 x double>, ptr %4090, align 64, !tbaa !26
  %4092 = fcmp oeq <8 x double> %4091, zeroinitializer
  %4093 = getelementptr inbounds nuw i8, ptr %4045, i64 1472
  %4094 = load <8 x double>, ptr %4093, align 64, !tbaa !26
  %4095 = fmul <8 x double> %4094, splat (double 0x3FEFF7CED916872B)
  %4096 = fcmp olt <8 x double> %4089, %4095
  %4097 = and <8 x i1> %4092, %4096
  %4098 = and <8 x i1> %4039, %4097
  %4099 = fsub <8 x double> %4087, %4094
  %4100 = fsub <8 x double> %4087, %4089
  %4101 = fdiv <8 x double> %4099, %4100
  %4102 = fcmp uge <8 x double> %4085, %4101
  %4103 = select <8 x i1> %4098, <8 x i1> %4102, <8 x i1> zeroinitializer
  %4104 = select <8 x i1> %4103, <8 x double> %4101, <8 x double> %4085
  %4105 = fcmp oeq <8 x double> %4091, splat (double 1.000000e+00)
  %4106 = getelementptr inbounds nuw i8, ptr %4045, i64 3264
  %4107 = load <8 x double>, ptr %4106, align 64, !tbaa !26
  %4108 = getelementptr inbounds nuw i8, ptr %4045, i64 1600
  %4109 = load <8 x double>, ptr %4108, align 64, !tbaa !26
  %4110 = fmul <8 x double> %4109, splat (double 1.000100e+00)
  %4111 = fcmp ogt <8 x double> %4107, %4110
  %4112 = and <8 x i1> %4105, %4111
  %4113 = and <8 x i1> %4039, %4112
  %4114 = getelementptr inbounds nuw i8, ptr %4045, i64 4160
  %4115 = load <8 x double>, ptr %4114, align 64, !tbaa !26
  %4116 = fsub <8 x double> %4109, %4115
  %4117 = fsub <8 x double> %4107, %4115
  %4118 = fdiv <8 x double> %4116, %4117
  %4119 = select <8 x i1> %4112, <8 x i1> %4039, <8 x i1> %4098
  %4120 = select <8 x i1> %4119, <8 x i64> splat (i64 -1), <8 x i64> %4081
  %4121 = fcmp uge <8 x double> %4104, %4118
  %4122 = select <8 x i1> %4113, <8 x i1> %4121, <8 x i1> zeroinitializer
  %4123 = select <8 x i1> %4122, <8 x double> %4118, <8 x double> %4104
  %4124 = add nuw nsw i64 %4041, 1
  %4125 = icmp eq i64 %4124, %3983
  br i1 %4125, label %4126, label %4040, !llvm.loop !137

4126:                                             ; preds = %4040
  %4127 = icmp eq <8 x i64> %4071, zeroinitializer
  br label %4128

4128:                                             ; preds = %4126, %3982
  %4129 = phi <8 x i64> [ zeroinitializer, %3982 ], [ %4120, %4126 ]
  %4130 = phi <8 x i1> [ splat (i1 true), %3982 ], [ %4127, %4126 ]
  %4131 = phi <8 x double> [ splat (double 1.000000e+00), %3982 ], [ %4123, %4126 ]
  %4132 = and <8 x i64> %4129, %4028
  %4133 = fcmp ogt <8 x double> %4015, %4002
  %4134 = select <8 x i1> %4133, <8 x double> %4015, <8 x double> %4002
  %4135 = select <8 x i1> %4130, <8 x double> %4134, <8 x double> zeroinitializer
  %4136 = icmp eq <8 x i64> %4132, zeroinitializer
  %4137 = select <8 x i1> %4136, <8 x double> %4015, <8 x double> %4135
  %4138 = fcmp ogt <8 x double> %4131, splat (double 5.000000e-02)
  %4139 = select <8 x i1> %4138, <8 x double> %4131, <8 x double> splat (double 5.000000e-02)
  %4140 = fcmp olt <8 x double> %4139, splat (double 0x3FEE666666666666)
  %4141 = select <8 x i1> %4140, <8 x double> %4139, <8 x double> splat (double 0x3FEE666666666666)
  %4142 = fmul <8 x double> %4002, %4141
  %4143 = fcmp ogt <8 x double> %4142, splat (double 0x3EB0C6F7A0B5ED8D)
  %4144 = select <8 x i1> %4143, <8 x double> %4142, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4145 = select <8 x i1> %4136, <8 x double> %4024, <8 x double> %4144
  %4146 = fadd <8 x double> %4027, splat (double 1.000000e+00)
  %4147 = select <8 x i1> %4136, <8 x double> %4027, <8 x double> %4146
  %4148 = xor <8 x i64> %4132, %4028
  %4149 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4150 = fmul <8 x double> %4149, splat (double 5.000000e-01)
  %4151 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %4152 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %4153 = fneg <8 x double> %4150
  %4154 = icmp eq <8 x i64> %4152, zeroinitializer
  %4155 = select <8 x i1> %4154, <8 x double> %4153, <8 x double> %4150
  %4156 = fadd <8 x double> %4151, %4155
  %4157 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %4158 = fsub <8 x double> %4157, %4156
  %4159 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %4160 = fsub <8 x double> %4159, %4156
  %4161 = fneg <8 x double> %4158
  %4162 = select <8 x i1> %4154, <8 x double> %4161, <8 x double> %4158
  %4163 = fneg <8 x double> %4160
  %4164 = select <8 x i1> %4154, <8 x double> %4163, <8 x double> %4160
  %4165 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %4166 = fcmp oeq <8 x double> %4165, zeroinitializer
  %4167 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %4168 = fcmp oeq <8 x double> %4167, zeroinitializer
  %4169 = and <8 x i1> %4166, %4168
  %4170 = fcmp olt <8 x double> %4162, splat (double -4.000000e-03)
  %4171 = and <8 x i1> %4169, %4170
  %4172 = fcmp ogt <8 x double> %4164, splat (double 4.000000e-03)
  %4173 = and <8 x i1> %4172, %4171
  %4174 = and <8 x i1> %4003, %4173
  %4175 = fsub <8 x double> %4162, %4164
  %4176 = fdiv <8 x double> %4162, %4175
  %4177 = select <8 x i1> %4174, <8 x i64> %4148, <8 x i64> zeroinitializer
  %4178 = fcmp ogt <8 x double> %4137, %4002
  %4179 = icmp eq <8 x i64> %4177, zeroinitializer
  %4180 = select <8 x i1> %4179, <8 x i1> splat (i1 true), <8 x i1> %4178
  %4181 = select <8 x i1> %4180, <8 x double> %4137, <8 x double> %4002
  store <8 x double> %4181, ptr %181, align 64, !tbaa !26
  %4182 = fcmp ogt <8 x double> %4176, splat (double 5.000000e-02)
  %4183 = select <8 x i1> %4182, <8 x double> %4176, <8 x double> splat (double 5.000000e-02)
  %4184 = fcmp olt <8 x double> %4183, splat (double 0x3FEE666666666666)
  %4185 = select <8 x i1> %4184, <8 x double> %4183, <8 x double> splat (double 0x3FEE666666666666)
  %4186 = fmul <8 x double> %4002, %4185
  %4187 = fcmp ogt <8 x double> %4186, splat (double 0x3EB0C6F7A0B5ED8D)
  %4188 = select <8 x i1> %4187, <8 x double> %4186, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4189 = select <8 x i1> %4179, <8 x double> %4145, <8 x double> %4188
  store <8 x double> %4189, ptr %161, align 64, !tbaa !26
  %4190 = fadd <8 x double> %4147, splat (double 1.000000e+00)
  %4191 = select <8 x i1> %4179, <8 x double> %4147, <8 x double> %4190
  store <8 x double> %4191, ptr %146, align 64, !tbaa !26
  %4192 = xor <8 x i64> %4177, %4148
  %4193 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4194 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4195 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %4196 = fsub <8 x double> %4194, %4195
  %4197 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %4198 = fcmp une <8 x double> %4197, splat (double 1.000000e+00)
  %4199 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4200 = fsub <8 x double> %4157, %4199
  %4201 = select <8 x i1> %4198, <8 x double> splat (double -1.000000e+00), <8 x double> %4200
  %4202 = fcmp une <8 x double> %4197, splat (double 2.000000e+00)
  %4203 = fsub <8 x double> %4193, %4199
  %4204 = select <8 x i1> %4202, <8 x double> %4201, <8 x double> %4203
  %4205 = fcmp une <8 x double> %4197, splat (double 3.000000e+00)
  %4206 = fsub <8 x double> %4196, %4199
  %4207 = select <8 x i1> %4205, <8 x double> %4204, <8 x double> %4206
  %4208 = fcmp une <8 x double> %4197, splat (double 4.000000e+00)
  %4209 = fsub <8 x double> %4199, %4196
  %4210 = select <8 x i1> %4208, <8 x double> %4207, <8 x double> %4209
  br i1 %4029, label %4211, label %4243

4211:                                             ; preds = %4128
  %4212 = load ptr, ptr %151, align 8, !tbaa !28
  %4213 = and i64 %3983, 1
  %4214 = icmp eq i64 %3983, 1
  br i1 %4214, label %4233, label %4215

4215:                                             ; preds = %4211
  %4216 = and i64 %3983, 9223372036854775806
  br label %4217

4217:                                             ; preds = %4217, %4215
  %4218 = phi i64 [ 0, %4215 ], [ %4230, %4217 ]
  %4219 = phi <8 x double> [ splat (double 1.000000e+09), %4215 ], [ %4229, %4217 ]
  %4220 = phi i64 [ 0, %4215 ], [ %4231, %4217 ]
  %4221 = getelementptr inbounds nuw %struct.Piece, ptr %4212, i64 %4218, i32 35
  %4222 = load <8 x double>, ptr %4221, align 64, !tbaa !26
  %4223 = fcmp olt <8 x double> %4219, %4222
  %4224 = select <8 x i1> %4223, <8 x double> %4219, <8 x double> %4222
  %4225 = or disjoint i64 %4218, 1
  %4226 = getelementptr inbounds nuw %struct.Piece, ptr %4212, i64 %4225, i32 35
  %4227 = load <8 x double>, ptr %4226, align 64, !tbaa !26
  %4228 = fcmp olt <8 x double> %4224, %4227
  %4229 = select <8 x i1> %4228, <8 x double> %4224, <8 x double> %4227
  %4230 = add nuw nsw i64 %4218, 2
  %4231 = add i64 %4220, 2
  %4232 = icmp eq i64 %4231, %4216
  br i1 %4232, label %4233, label %4217, !llvm.loop !138

4233:                                             ; preds = %4217, %4211
  %4234 = phi <8 x double> [ poison, %4211 ], [ %4229, %4217 ]
  %4235 = phi i64 [ 0, %4211 ], [ %4230, %4217 ]
  %4236 = phi <8 x double> [ splat (double 1.000000e+09), %4211 ], [ %4229, %4217 ]
  %4237 = icmp eq i64 %4213, 0
  br i1 %4237, label %4243, label %4238

4238:                                             ; preds = %4233
  %4239 = getelementptr inbounds nuw %struct.Piece, ptr %4212, i64 %4235, i32 35
  %4240 = load <8 x double>, ptr %4239, align 64, !tbaa !26
  %4241 = fcmp olt <8 x double> %4236, %4240
  %4242 = select <8 x i1> %4241, <8 x double> %4236, <8 x double> %4240
  br label %4243

4243:                                             ; preds = %4238, %4233, %4128
  %4244 = phi <8 x double> [ splat (double 1.000000e+09), %4128 ], [ %4234, %4233 ], [ %4242, %4238 ]
  %4245 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %4246 = fsub <8 x double> %4245, %4195
  %4247 = fsub <8 x double> %4159, %4199
  %4248 = select <8 x i1> %4198, <8 x double> splat (double -1.000000e+00), <8 x double> %4247
  %4249 = fsub <8 x double> %4244, %4199
  %4250 = select <8 x i1> %4202, <8 x double> %4248, <8 x double> %4249
  %4251 = fsub <8 x double> %4246, %4199
  %4252 = select <8 x i1> %4205, <8 x double> %4250, <8 x double> %4251
  %4253 = fsub <8 x double> %4199, %4246
  %4254 = select <8 x i1> %4208, <8 x double> %4252, <8 x double> %4253
  %4255 = fcmp une <8 x double> %4197, zeroinitializer
  %4256 = fcmp oge <8 x double> %4002, splat (double 5.000000e-02)
  %4257 = and <8 x i1> %4256, %4255
  %4258 = fcmp olt <8 x double> %4210, zeroinitializer
  %4259 = and <8 x i1> %4257, %4258
  %4260 = fsub <8 x double> %4254, %4210
  %4261 = fmul <8 x double> %4260, splat (double 2.000000e-02)
  %4262 = fcmp ogt <8 x double> %4254, %4261
  %4263 = and <8 x i1> %4259, %4262
  %4264 = fsub <8 x double> %4210, %4254
  %4265 = fdiv <8 x double> %4210, %4264
  %4266 = fcmp olt <8 x double> %4265, splat (double 0x3FEE666666666666)
  %4267 = and <8 x i1> %4266, %4263
  %4268 = select <8 x i1> %4267, <8 x i64> %4192, <8 x i64> zeroinitializer
  %4269 = fcmp ogt <8 x double> %4181, %4002
  %4270 = icmp eq <8 x i64> %4268, zeroinitializer
  %4271 = select <8 x i1> %4270, <8 x i1> splat (i1 true), <8 x i1> %4269
  %4272 = select <8 x i1> %4271, <8 x double> %4181, <8 x double> %4002
  store <8 x double> %4272, ptr %181, align 64, !tbaa !26
  %4273 = fcmp ogt <8 x double> %4265, splat (double 5.000000e-02)
  %4274 = select <8 x i1> %4273, <8 x double> %4265, <8 x double> splat (double 5.000000e-02)
  %4275 = fcmp olt <8 x double> %4274, splat (double 0x3FEE666666666666)
  %4276 = select <8 x i1> %4275, <8 x double> %4274, <8 x double> splat (double 0x3FEE666666666666)
  %4277 = fmul <8 x double> %4002, %4276
  %4278 = fcmp ogt <8 x double> %4277, splat (double 0x3EB0C6F7A0B5ED8D)
  %4279 = select <8 x i1> %4278, <8 x double> %4277, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4280 = select <8 x i1> %4270, <8 x double> %4189, <8 x double> %4279
  store <8 x double> %4280, ptr %161, align 64, !tbaa !26
  %4281 = fadd <8 x double> %4191, splat (double 1.000000e+00)
  %4282 = select <8 x i1> %4270, <8 x double> %4191, <8 x double> %4281
  store <8 x double> %4282, ptr %146, align 64, !tbaa !26
  %4283 = xor <8 x i64> %4268, %4192
  %4284 = or <8 x i64> %4283, %3989
  %4285 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4284)
  %4286 = icmp eq i64 %4285, 0
  br i1 %4286, label %549, label %4343

4287:                                             ; preds = %3980, %4335
  %4288 = phi i64 [ 0, %3980 ], [ %4340, %4335 ]
  %4289 = load ptr, ptr %151, align 8, !tbaa !28
  %4290 = getelementptr inbounds nuw %struct.Piece, ptr %4289, i64 %4288
  %4291 = getelementptr inbounds nuw i8, ptr %4290, i64 8520
  %4292 = load ptr, ptr %4291, align 8, !tbaa !59
  %4293 = load <8 x double>, ptr %4292, align 64, !tbaa !26
  %4294 = getelementptr inbounds nuw i8, ptr %4290, i64 1344
  %4295 = load <8 x double>, ptr %4294, align 64, !tbaa !26
  %4296 = getelementptr inbounds nuw i8, ptr %4292, i64 64
  %4297 = load <8 x double>, ptr %4296, align 64, !tbaa !26
  %4298 = fsub <8 x double> %4297, %4293
  %4299 = fneg <8 x double> %4295
  %4300 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4299, <8 x double> %4298, <8 x double> %4293)
  %4301 = getelementptr inbounds nuw i8, ptr %4290, i64 8512
  %4302 = load i64, ptr %4301, align 64, !tbaa !31
  %4303 = icmp eq i64 %4302, 0
  br i1 %4303, label %4335, label %4304

4304:                                             ; preds = %4287
  %4305 = getelementptr <8 x double>, ptr %4292, i64 %4302
  %4306 = getelementptr i8, ptr %4305, i64 -64
  %4307 = load <8 x double>, ptr %4306, align 64, !tbaa !26
  %4308 = load <8 x double>, ptr %4305, align 64, !tbaa !26
  %4309 = getelementptr inbounds nuw i8, ptr %4290, i64 2880
  %4310 = load <8 x double>, ptr %4309, align 64, !tbaa !26
  %4311 = getelementptr inbounds nuw i8, ptr %4290, i64 2944
  %4312 = load <8 x double>, ptr %4311, align 64, !tbaa !26
  %4313 = getelementptr inbounds nuw i8, ptr %4290, i64 64
  %4314 = load <8 x double>, ptr %4313, align 64, !tbaa !26
  %4315 = fsub <8 x double> %4312, %4314
  %4316 = fmul <8 x double> %4310, %4315
  %4317 = getelementptr inbounds nuw i8, ptr %4290, i64 576
  %4318 = load <8 x double>, ptr %4317, align 64, !tbaa !26
  %4319 = getelementptr inbounds nuw i8, ptr %4290, i64 2816
  %4320 = load <8 x double>, ptr %4319, align 64, !tbaa !26
  %4321 = fdiv <8 x double> %4318, %4320
  %4322 = getelementptr inbounds nuw i8, ptr %4290, i64 192
  %4323 = load <8 x double>, ptr %4322, align 64, !tbaa !26
  %4324 = getelementptr inbounds nuw i8, ptr %4290, i64 256
  %4325 = load <8 x double>, ptr %4324, align 64, !tbaa !26
  %4326 = getelementptr inbounds nuw i8, ptr %4290, i64 320
  %4327 = load <8 x double>, ptr %4326, align 64, !tbaa !26
  %4328 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4308, <8 x double> %4327, <8 x double> %4325)
  %4329 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4308, <8 x double> %4328, <8 x double> %4323)
  %4330 = fdiv <8 x double> %4329, %4316
  %4331 = fmul <8 x double> %4308, %4330
  %4332 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4321, <8 x double> %4307, <8 x double> %4331)
  %4333 = fadd <8 x double> %4321, %4330
  %4334 = fdiv <8 x double> %4332, %4333
  br label %4335

4335:                                             ; preds = %4287, %4304
  %4336 = phi <8 x double> [ %4334, %4304 ], [ %4300, %4287 ]
  %4337 = getelementptr inbounds nuw i8, ptr %4290, i64 7616
  %4338 = load <8 x double>, ptr %4337, align 64, !tbaa !26
  %4339 = select <8 x i1> %3981, <8 x double> %4338, <8 x double> %4336
  store <8 x double> %4339, ptr %4337, align 64, !tbaa !26
  %4340 = add nuw nsw i64 %4288, 1
  %4341 = load i64, ptr %178, align 8, !tbaa !20
  %4342 = icmp slt i64 %4340, %4341
  br i1 %4342, label %4287, label %3982, !llvm.loop !139

4343:                                             ; preds = %4243
  %4344 = icmp eq <8 x i64> %4284, zeroinitializer
  %4345 = select <8 x i1> %4344, <8 x double> %3996, <8 x double> %3995
  store <8 x double> %4345, ptr %232, align 64, !tbaa !26
  %4346 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %4347 = select <8 x i1> %4344, <8 x double> %4346, <8 x double> %4157
  store <8 x double> %4347, ptr %172, align 64, !tbaa !26
  %4348 = select <8 x i1> %4344, <8 x double> %4157, <8 x double> %4159
  store <8 x double> %4348, ptr %166, align 64, !tbaa !26
  %4349 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %4350 = select <8 x i1> %4344, <8 x double> %4349, <8 x double> %4194
  store <8 x double> %4350, ptr %263, align 64, !tbaa !26
  %4351 = select <8 x i1> %4344, <8 x double> %4194, <8 x double> %4245
  store <8 x double> %4351, ptr %264, align 64, !tbaa !26
  %4352 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %4353 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %4354 = select <8 x i1> %4344, <8 x double> %4353, <8 x double> %4352
  store <8 x double> %4354, ptr %265, align 64, !tbaa !26
  %4355 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %4356 = select <8 x i1> %4344, <8 x double> %4352, <8 x double> %4355
  store <8 x double> %4356, ptr %266, align 64, !tbaa !26
  %4357 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %4358 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %4359 = select <8 x i1> %4344, <8 x double> %4358, <8 x double> %4357
  store <8 x double> %4359, ptr %268, align 64, !tbaa !26
  %4360 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %4361 = select <8 x i1> %4344, <8 x double> %4357, <8 x double> %4360
  store <8 x double> %4361, ptr %269, align 64, !tbaa !26
  %4362 = load <8 x double>, ptr %272, align 64, !tbaa !26
  %4363 = load <8 x double>, ptr %271, align 64, !tbaa !26
  %4364 = select <8 x i1> %4344, <8 x double> %4363, <8 x double> %4362
  store <8 x double> %4364, ptr %271, align 64, !tbaa !26
  %4365 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %4366 = select <8 x i1> %4344, <8 x double> %4362, <8 x double> %4365
  store <8 x double> %4366, ptr %272, align 64, !tbaa !26
  %4367 = load <8 x double>, ptr %275, align 64, !tbaa !26
  %4368 = load <8 x double>, ptr %274, align 64, !tbaa !26
  %4369 = select <8 x i1> %4344, <8 x double> %4368, <8 x double> %4367
  store <8 x double> %4369, ptr %274, align 64, !tbaa !26
  %4370 = load <8 x double>, ptr %276, align 64, !tbaa !26
  %4371 = select <8 x i1> %4344, <8 x double> %4367, <8 x double> %4370
  store <8 x double> %4371, ptr %275, align 64, !tbaa !26
  %4372 = xor <8 x i64> %4284, splat (i64 -1)
  br i1 %4029, label %4373, label %4767

4373:                                             ; preds = %4343, %4732
  %4374 = phi i64 [ %4744, %4732 ], [ 0, %4343 ]
  %4375 = load ptr, ptr %151, align 8, !tbaa !28
  %4376 = getelementptr inbounds nuw %struct.Piece, ptr %4375, i64 %4374
  %4377 = getelementptr inbounds nuw i8, ptr %4376, i64 1664
  %4378 = load <8 x double>, ptr %4377, align 64, !tbaa !26
  %4379 = fcmp ogt <8 x double> %4378, zeroinitializer
  %4380 = bitcast <8 x i1> %4379 to i8
  %4381 = icmp eq i8 %4380, 0
  br i1 %4381, label %4639, label %4382

4382:                                             ; preds = %4373
  %4383 = load i64, ptr %141, align 16, !tbaa !21
  %4384 = add i64 %4383, -1
  %4385 = getelementptr inbounds nuw i8, ptr %4376, i64 4672
  %4386 = load <8 x double>, ptr %4385, align 64, !tbaa !26
  %4387 = getelementptr inbounds nuw i8, ptr %4376, i64 3776
  %4388 = load <8 x double>, ptr %4387, align 64, !tbaa !26
  %4389 = getelementptr inbounds nuw i8, ptr %4376, i64 8512
  %4390 = load i64, ptr %4389, align 64, !tbaa !31
  %4391 = icmp sgt i64 %4383, %4390
  br i1 %4391, label %4400, label %4392

4392:                                             ; preds = %4382
  %4393 = getelementptr inbounds nuw i8, ptr %4376, i64 8608
  %4394 = load ptr, ptr %4393, align 32, !tbaa !74
  %4395 = getelementptr inbounds <8 x double>, ptr %4394, i64 %4384
  %4396 = load <8 x double>, ptr %4395, align 64, !tbaa !26
  %4397 = getelementptr inbounds nuw i8, ptr %4376, i64 1536
  %4398 = load <8 x double>, ptr %4397, align 64, !tbaa !26
  %4399 = fmul <8 x double> %4396, %4398
  br label %4409

4400:                                             ; preds = %4382
  %4401 = getelementptr inbounds nuw i8, ptr %4376, i64 1536
  %4402 = load <8 x double>, ptr %4401, align 64, !tbaa !26
  %4403 = getelementptr inbounds nuw i8, ptr %4376, i64 8608
  %4404 = load ptr, ptr %4403, align 32, !tbaa !74
  %4405 = getelementptr inbounds <8 x double>, ptr %4404, i64 %4384
  %4406 = load <8 x double>, ptr %4405, align 64, !tbaa !26
  %4407 = fsub <8 x double> %4386, %4402
  %4408 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4406, <8 x double> %4407, <8 x double> %4402)
  br label %4409

4409:                                             ; preds = %4400, %4392
  %4410 = phi <8 x double> [ %4398, %4392 ], [ %4402, %4400 ]
  %4411 = phi <8 x double> [ %4399, %4392 ], [ %4408, %4400 ]
  %4412 = getelementptr inbounds nuw i8, ptr %4376, i64 3008
  %4413 = load <8 x double>, ptr %4412, align 64, !tbaa !26
  %4414 = fcmp ole <8 x double> %4411, %4413
  %4415 = getelementptr inbounds nuw i8, ptr %4376, i64 7680
  %4416 = load <8 x double>, ptr %4415, align 64, !tbaa !26
  %4417 = fcmp oeq <8 x double> %4416, zeroinitializer
  %4418 = select <8 x i1> %4417, <8 x i1> %4414, <8 x i1> zeroinitializer
  %4419 = select <8 x i1> %4418, <8 x i64> %4284, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %4420 = xor <8 x i64> %4419, %4284
  store <8 x i64> %4420, ptr %12, align 64, !tbaa !26
  %4421 = fsub <8 x double> %4386, %4388
  %4422 = getelementptr inbounds nuw i8, ptr %4376, i64 1536
  %4423 = fsub <8 x double> %4388, %4410
  %4424 = fdiv <8 x double> %4421, %4423
  %4425 = getelementptr inbounds nuw i8, ptr %4376, i64 8552
  %4426 = load ptr, ptr %4425, align 8, !tbaa !69
  %4427 = getelementptr inbounds <8 x double>, ptr %4426, i64 %4390
  %4428 = load <8 x double>, ptr %4427, align 64, !tbaa !26
  %4429 = getelementptr inbounds nuw i8, ptr %4376, i64 8560
  %4430 = load ptr, ptr %4429, align 16, !tbaa !49
  %4431 = getelementptr inbounds <8 x double>, ptr %4430, i64 %4390
  %4432 = load <8 x double>, ptr %4431, align 64, !tbaa !26
  %4433 = icmp eq <8 x i64> %4419, zeroinitializer
  %4434 = select <8 x i1> %4433, <8 x double> %4432, <8 x double> %4428
  store <8 x double> %4434, ptr %4431, align 64, !tbaa !26
  %4435 = load i64, ptr %4389, align 64, !tbaa !31
  %4436 = add nsw i64 %4435, 1
  %4437 = icmp slt i64 %4436, %4384
  br i1 %4437, label %4438, label %4442

4438:                                             ; preds = %4409
  %4439 = getelementptr inbounds nuw i8, ptr %4376, i64 8624
  br label %4482

4440:                                             ; preds = %4482
  %4441 = load i64, ptr %4389, align 64, !tbaa !31
  br label %4442

4442:                                             ; preds = %4440, %4409
  %4443 = phi i64 [ %4435, %4409 ], [ %4441, %4440 ]
  %4444 = phi <8 x double> [ %4428, %4409 ], [ %4487, %4440 ]
  %4445 = icmp sgt i64 %4383, %4443
  br i1 %4445, label %4453, label %4446

4446:                                             ; preds = %4442
  %4447 = getelementptr inbounds nuw i8, ptr %4376, i64 8608
  %4448 = load ptr, ptr %4447, align 32, !tbaa !74
  %4449 = getelementptr inbounds <8 x double>, ptr %4448, i64 %4384
  %4450 = load <8 x double>, ptr %4449, align 64, !tbaa !26
  %4451 = load <8 x double>, ptr %4422, align 64, !tbaa !26
  %4452 = fmul <8 x double> %4450, %4451
  br label %4461

4453:                                             ; preds = %4442
  %4454 = load <8 x double>, ptr %4422, align 64, !tbaa !26
  %4455 = getelementptr inbounds nuw i8, ptr %4376, i64 8608
  %4456 = load ptr, ptr %4455, align 32, !tbaa !74
  %4457 = getelementptr inbounds <8 x double>, ptr %4456, i64 %4384
  %4458 = load <8 x double>, ptr %4457, align 64, !tbaa !26
  %4459 = fsub <8 x double> %4388, %4454
  %4460 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4458, <8 x double> %4459, <8 x double> %4454)
  br label %4461

4461:                                             ; preds = %4453, %4446
  %4462 = phi <8 x double> [ %4452, %4446 ], [ %4460, %4453 ]
  %4463 = load ptr, ptr %4425, align 8, !tbaa !69
  %4464 = getelementptr inbounds <8 x double>, ptr %4463, i64 %4384
  %4465 = load <8 x double>, ptr %4464, align 64, !tbaa !26
  %4466 = load ptr, ptr %4429, align 16, !tbaa !49
  %4467 = getelementptr inbounds <8 x double>, ptr %4466, i64 %4384
  %4468 = fsub <8 x double> %4444, %4465
  %4469 = fsub <8 x double> %4411, %4462
  %4470 = load <8 x double>, ptr %4412, align 64, !tbaa !26
  %4471 = fsub <8 x double> %4470, %4462
  %4472 = fdiv <8 x double> %4469, %4471
  %4473 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4468, <8 x double> %4472, <8 x double> %4465)
  %4474 = load <8 x double>, ptr %4467, align 64, !tbaa !26
  %4475 = select <8 x i1> %4433, <8 x double> %4474, <8 x double> %4473
  store <8 x double> %4475, ptr %4467, align 64, !tbaa !26
  %4476 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4420)
  %4477 = icmp eq i64 %4476, 0
  br i1 %4477, label %4638, label %4478

4478:                                             ; preds = %4461
  %4479 = getelementptr inbounds nuw i8, ptr %4376, i64 8608
  %4480 = getelementptr inbounds nuw i8, ptr %4376, i64 3136
  %4481 = getelementptr inbounds nuw i8, ptr %4376, i64 832
  br label %4500

4482:                                             ; preds = %4438, %4482
  %4483 = phi i64 [ %4436, %4438 ], [ %4498, %4482 ]
  %4484 = phi <8 x double> [ %4428, %4438 ], [ %4487, %4482 ]
  %4485 = load ptr, ptr %4425, align 8, !tbaa !69
  %4486 = getelementptr inbounds <8 x double>, ptr %4485, i64 %4483
  %4487 = load <8 x double>, ptr %4486, align 64, !tbaa !26
  %4488 = load ptr, ptr %4429, align 16, !tbaa !49
  %4489 = getelementptr inbounds <8 x double>, ptr %4488, i64 %4483
  %4490 = fsub <8 x double> %4484, %4487
  %4491 = load ptr, ptr %4439, align 16, !tbaa !140
  %4492 = getelementptr inbounds <8 x double>, ptr %4491, i64 %4483
  %4493 = load <8 x double>, ptr %4492, align 64, !tbaa !26
  %4494 = fmul <8 x double> %4424, %4493
  %4495 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4490, <8 x double> %4494, <8 x double> %4487)
  %4496 = load <8 x double>, ptr %4489, align 64, !tbaa !26
  %4497 = select <8 x i1> %4433, <8 x double> %4496, <8 x double> %4495
  store <8 x double> %4497, ptr %4489, align 64, !tbaa !26
  %4498 = add nsw i64 %4483, 1
  %4499 = icmp eq i64 %4498, %4384
  br i1 %4499, label %4440, label %4482, !llvm.loop !141

4500:                                             ; preds = %4478, %4635
  %4501 = phi i64 [ 0, %4478 ], [ %4636, %4635 ]
  %4502 = getelementptr inbounds nuw i64, ptr %12, i64 %4501
  %4503 = load i64, ptr %4502, align 8, !tbaa !30
  %4504 = icmp eq i64 %4503, 0
  br i1 %4504, label %4635, label %4505

4505:                                             ; preds = %4500
  %4506 = load i64, ptr %141, align 16, !tbaa !21
  %4507 = load i64, ptr %4389, align 64, !tbaa !31
  %4508 = getelementptr inbounds nuw double, ptr %4422, i64 %4501
  %4509 = load double, ptr %4508, align 8, !tbaa !44
  %4510 = getelementptr inbounds nuw double, ptr %4412, i64 %4501
  %4511 = load double, ptr %4510, align 8, !tbaa !44
  %4512 = add nsw i64 %4506, -1
  %4513 = icmp sgt i64 %4506, %4507
  br i1 %4513, label %4514, label %4635

4514:                                             ; preds = %4505
  %4515 = getelementptr inbounds nuw double, ptr %4387, i64 %4501
  %4516 = load double, ptr %4515, align 8, !tbaa !44
  %4517 = getelementptr inbounds nuw double, ptr %4385, i64 %4501
  %4518 = load double, ptr %4517, align 8, !tbaa !44
  %4519 = load ptr, ptr %4479, align 32
  %4520 = getelementptr i8, ptr %4519, i64 64
  %4521 = getelementptr double, ptr %4520, i64 %4501
  %4522 = fsub double %4516, %4509
  %4523 = getelementptr double, ptr %4519, i64 %4501
  %4524 = fsub double %4518, %4509
  %4525 = load ptr, ptr %4425, align 8, !tbaa !69
  %4526 = getelementptr double, ptr %4525, i64 %4501
  %4527 = load ptr, ptr %4429, align 16, !tbaa !49
  %4528 = getelementptr double, ptr %4527, i64 %4501
  %4529 = getelementptr <8 x double>, ptr %4523, i64 %4512
  br label %4557

4530:                                             ; preds = %4603
  %4531 = getelementptr inbounds nuw double, ptr %4415, i64 %4501
  %4532 = load double, ptr %4531, align 8, !tbaa !44
  %4533 = fcmp ogt double %4532, 0.000000e+00
  %4534 = fcmp ogt double %4614, 0.000000e+00
  %4535 = select i1 %4533, i1 %4534, i1 false
  br i1 %4535, label %4536, label %4635

4536:                                             ; preds = %4530
  %4537 = getelementptr inbounds nuw double, ptr %4480, i64 %4501
  %4538 = getelementptr inbounds nuw double, ptr %4481, i64 %4501
  %4539 = sub i64 %4506, %4507
  %4540 = add i64 %4507, 1
  %4541 = and i64 %4539, 1
  %4542 = icmp eq i64 %4541, 0
  br i1 %4542, label %4552, label %4543

4543:                                             ; preds = %4536
  %4544 = load double, ptr %4537, align 8, !tbaa !44
  %4545 = load double, ptr %4538, align 8, !tbaa !44
  %4546 = fmul double %4614, %4545
  %4547 = fdiv double %4544, %4546
  %4548 = getelementptr <8 x double>, ptr %4528, i64 %4507
  %4549 = load double, ptr %4548, align 8, !tbaa !44
  %4550 = fmul double %4549, %4547
  store double %4550, ptr %4548, align 8, !tbaa !44
  %4551 = add nsw i64 %4507, 1
  br label %4552

4552:                                             ; preds = %4543, %4536
  %4553 = phi i64 [ %4507, %4536 ], [ %4551, %4543 ]
  %4554 = icmp eq i64 %4506, %4540
  br i1 %4554, label %4635, label %4555

4555:                                             ; preds = %4552
  %4556 = getelementptr i8, ptr %4528, i64 64
  br label %4617

4557:                                             ; preds = %4603, %4514
  %4558 = phi double [ 0.000000e+00, %4514 ], [ %4614, %4603 ]
  %4559 = phi i64 [ %4512, %4514 ], [ %4615, %4603 ]
  %4560 = icmp eq i64 %4559, %4512
  br i1 %4560, label %4561, label %4564

4561:                                             ; preds = %4557
  %4562 = load double, ptr %4529, align 8, !tbaa !44
  %4563 = tail call noundef double @llvm.fmuladd.f64(double %4562, double %4522, double %4509)
  br label %4575

4564:                                             ; preds = %4557
  %4565 = getelementptr <8 x double>, ptr %4521, i64 %4559
  %4566 = load double, ptr %4565, align 8, !tbaa !44
  %4567 = tail call noundef double @llvm.fmuladd.f64(double %4566, double %4522, double %4509)
  %4568 = getelementptr <8 x double>, ptr %4523, i64 %4559
  %4569 = load double, ptr %4568, align 8, !tbaa !44
  %4570 = tail call noundef double @llvm.fmuladd.f64(double %4569, double %4522, double %4509)
  %4571 = tail call noundef double @llvm.fmuladd.f64(double %4566, double %4524, double %4509)
  %4572 = fcmp ult double %4571, %4567
  br i1 %4572, label %4573, label %4575

4573:                                             ; preds = %4564
  %4574 = add nsw i64 %4559, 1
  br label %4575

4575:                                             ; preds = %4573, %4564, %4561
  %4576 = phi double [ %4570, %4573 ], [ %4570, %4564 ], [ %4563, %4561 ]
  %4577 = phi double [ %4567, %4573 ], [ %4567, %4564 ], [ %4511, %4561 ]
  %4578 = phi i64 [ %4574, %4573 ], [ %4559, %4564 ], [ %4512, %4561 ]
  %4579 = icmp sgt i64 %4578, %4507
  br i1 %4579, label %4580, label %4603

4580:                                             ; preds = %4575
  %4581 = load ptr, ptr %4425, align 8
  %4582 = getelementptr double, ptr %4581, i64 %4501
  br label %4583

4583:                                             ; preds = %4598, %4580
  %4584 = phi i64 [ %4578, %4580 ], [ %4601, %4598 ]
  %4585 = phi double [ 0.000000e+00, %4580 ], [ %4600, %4598 ]
  %4586 = phi double [ %4577, %4580 ], [ %4599, %4598 ]
  %4587 = getelementptr <8 x double>, ptr %4523, i64 %4584
  %4588 = load double, ptr %4587, align 8, !tbaa !44
  %4589 = tail call noundef double @llvm.fmuladd.f64(double %4588, double %4524, double %4509)
  %4590 = fcmp ogt double %4589, %4576
  br i1 %4590, label %4591, label %4603

4591:                                             ; preds = %4583
  %4592 = fcmp ogt double %4586, %4589
  br i1 %4592, label %4593, label %4598

4593:                                             ; preds = %4591
  %4594 = getelementptr <8 x double>, ptr %4582, i64 %4584
  %4595 = load double, ptr %4594, align 8, !tbaa !44
  %4596 = fsub double %4586, %4589
  %4597 = tail call double @llvm.fmuladd.f64(double %4595, double %4596, double %4585)
  br label %4598

4598:                                             ; preds = %4593, %4591
  %4599 = phi double [ %4589, %4593 ], [ %4586, %4591 ]
  %4600 = phi double [ %4597, %4593 ], [ %4585, %4591 ]
  %4601 = add nsw i64 %4584, -1
  %4602 = icmp sgt i64 %4601, %4507
  br i1 %4602, label %4583, label %4603, !llvm.loop !142

4603:                                             ; preds = %4598, %4583, %4575
  %4604 = phi double [ %4577, %4575 ], [ %4586, %4583 ], [ %4599, %4598 ]
  %4605 = phi double [ 0.000000e+00, %4575 ], [ %4585, %4583 ], [ %4600, %4598 ]
  %4606 = phi i64 [ %4578, %4575 ], [ %4584, %4583 ], [ %4507, %4598 ]
  %4607 = getelementptr <8 x double>, ptr %4526, i64 %4606
  %4608 = load double, ptr %4607, align 8, !tbaa !44
  %4609 = fsub double %4604, %4576
  %4610 = tail call double @llvm.fmuladd.f64(double %4608, double %4609, double %4605)
  %4611 = fsub double %4577, %4576
  %4612 = fdiv double %4610, %4611
  %4613 = getelementptr <8 x double>, ptr %4528, i64 %4559
  store double %4612, ptr %4613, align 8, !tbaa !44
  %4614 = fadd double %4558, %4610
  %4615 = add nsw i64 %4559, -1
  %4616 = icmp sgt i64 %4559, %4507
  br i1 %4616, label %4557, label %4530, !llvm.loop !143

4617:                                             ; preds = %4617, %4555
  %4618 = phi i64 [ %4553, %4555 ], [ %4633, %4617 ]
  %4619 = load double, ptr %4537, align 8, !tbaa !44
  %4620 = load double, ptr %4538, align 8, !tbaa !44
  %4621 = fmul double %4614, %4620
  %4622 = fdiv double %4619, %4621
  %4623 = getelementptr <8 x double>, ptr %4528, i64 %4618
  %4624 = load double, ptr %4623, align 8, !tbaa !44
  %4625 = fmul double %4624, %4622
  store double %4625, ptr %4623, align 8, !tbaa !44
  %4626 = load double, ptr %4537, align 8, !tbaa !44
  %4627 = load double, ptr %4538, align 8, !tbaa !44
  %4628 = fmul double %4614, %4627
  %4629 = fdiv double %4626, %4628
  %4630 = getelementptr <8 x double>, ptr %4556, i64 %4618
  %4631 = load double, ptr %4630, align 8, !tbaa !44
  %4632 = fmul double %4631, %4629
  store double %4632, ptr %4630, align 8, !tbaa !44
  %4633 = add nsw i64 %4618, 2
  %4634 = icmp eq i64 %4633, %4506
  br i1 %4634, label %4635, label %4617, !llvm.loop !144

4635:                                             ; preds = %4552, %4617, %4530, %4505, %4500
  %4636 = add nuw nsw i64 %4501, 1
  %4637 = icmp eq i64 %4636, 8
  br i1 %4637, label %4638, label %4500, !llvm.loop !145

4638:                                             ; preds = %4635, %4461
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  br label %4639

4639:                                             ; preds = %4373, %4638
  %4640 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %4641 = and <8 x i64> %4640, %4372
  %4642 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4641)
  %4643 = icmp eq i64 %4642, 0
  %4644 = getelementptr inbounds nuw i8, ptr %4376, i64 8520
  br i1 %4643, label %4645, label %4663

4645:                                             ; preds = %4639
  %4646 = getelementptr inbounds nuw i8, ptr %4376, i64 8528
  %4647 = getelementptr inbounds nuw i8, ptr %4376, i64 8536
  %4648 = load ptr, ptr %4647, align 8, !tbaa !35
  %4649 = load ptr, ptr %4646, align 8, !tbaa !35
  store ptr %4649, ptr %4647, align 8, !tbaa !35
  %4650 = load ptr, ptr %4644, align 8, !tbaa !35
  store ptr %4650, ptr %4646, align 8, !tbaa !35
  store ptr %4648, ptr %4644, align 8, !tbaa !35
  %4651 = getelementptr inbounds nuw i8, ptr %4376, i64 8640
  %4652 = getelementptr inbounds nuw i8, ptr %4376, i64 8648
  %4653 = getelementptr inbounds nuw i8, ptr %4376, i64 8656
  %4654 = load ptr, ptr %4653, align 8, !tbaa !35
  %4655 = load ptr, ptr %4652, align 8, !tbaa !35
  store ptr %4655, ptr %4653, align 8, !tbaa !35
  %4656 = load ptr, ptr %4651, align 8, !tbaa !35
  store ptr %4656, ptr %4652, align 8, !tbaa !35
  store ptr %4654, ptr %4651, align 8, !tbaa !35
  %4657 = getelementptr inbounds nuw i8, ptr %4376, i64 8688
  %4658 = getelementptr inbounds nuw i8, ptr %4376, i64 8696
  %4659 = getelementptr inbounds nuw i8, ptr %4376, i64 8704
  %4660 = load ptr, ptr %4659, align 8, !tbaa !35
  %4661 = load ptr, ptr %4658, align 8, !tbaa !35
  store ptr %4661, ptr %4659, align 8, !tbaa !35
  %4662 = load ptr, ptr %4657, align 8, !tbaa !35
  store ptr %4662, ptr %4658, align 8, !tbaa !35
  store ptr %4660, ptr %4657, align 8, !tbaa !35
  br label %4728

4663:                                             ; preds = %4639
  %4664 = load ptr, ptr %4644, align 8, !tbaa !59
  %4665 = getelementptr inbounds nuw i8, ptr %4376, i64 8528
  %4666 = load ptr, ptr %4665, align 16, !tbaa !48
  %4667 = getelementptr inbounds nuw i8, ptr %4376, i64 8536
  %4668 = load ptr, ptr %4667, align 8, !tbaa !58
  %4669 = load i64, ptr %141, align 16, !tbaa !21
  %4670 = icmp sgt i64 %4669, 0
  br i1 %4670, label %4671, label %4684

4671:                                             ; preds = %4663, %4671
  %4672 = phi i64 [ %4682, %4671 ], [ 0, %4663 ]
  %4673 = getelementptr inbounds nuw <8 x double>, ptr %4668, i64 %4672
  %4674 = getelementptr inbounds nuw <8 x double>, ptr %4666, i64 %4672
  %4675 = load <8 x double>, ptr %4674, align 64, !tbaa !26
  %4676 = load <8 x double>, ptr %4673, align 64, !tbaa !26
  %4677 = select <8 x i1> %4344, <8 x double> %4676, <8 x double> %4675
  store <8 x double> %4677, ptr %4673, align 64, !tbaa !26
  %4678 = getelementptr inbounds nuw <8 x double>, ptr %4664, i64 %4672
  %4679 = load <8 x double>, ptr %4678, align 64, !tbaa !26
  %4680 = load <8 x double>, ptr %4674, align 64, !tbaa !26
  %4681 = select <8 x i1> %4344, <8 x double> %4680, <8 x double> %4679
  store <8 x double> %4681, ptr %4674, align 64, !tbaa !26
  %4682 = add nuw nsw i64 %4672, 1
  %4683 = icmp eq i64 %4682, %4669
  br i1 %4683, label %4684, label %4671, !llvm.loop !146

4684:                                             ; preds = %4671, %4663
  %4685 = getelementptr inbounds nuw i8, ptr %4376, i64 8640
  %4686 = load ptr, ptr %4685, align 64, !tbaa !129
  %4687 = getelementptr inbounds nuw i8, ptr %4376, i64 8648
  %4688 = load ptr, ptr %4687, align 8, !tbaa !52
  %4689 = getelementptr inbounds nuw i8, ptr %4376, i64 8656
  %4690 = load ptr, ptr %4689, align 16, !tbaa !63
  %4691 = load i64, ptr %142, align 8, !tbaa !22
  %4692 = icmp sgt i64 %4691, 0
  br i1 %4692, label %4693, label %4728

4693:                                             ; preds = %4684, %4693
  %4694 = phi i64 [ %4704, %4693 ], [ 0, %4684 ]
  %4695 = getelementptr inbounds nuw <8 x double>, ptr %4690, i64 %4694
  %4696 = getelementptr inbounds nuw <8 x double>, ptr %4688, i64 %4694
  %4697 = load <8 x double>, ptr %4696, align 64, !tbaa !26
  %4698 = load <8 x double>, ptr %4695, align 64, !tbaa !26
  %4699 = select <8 x i1> %4344, <8 x double> %4698, <8 x double> %4697
  store <8 x double> %4699, ptr %4695, align 64, !tbaa !26
  %4700 = getelementptr inbounds nuw <8 x double>, ptr %4686, i64 %4694
  %4701 = load <8 x double>, ptr %4700, align 64, !tbaa !26
  %4702 = load <8 x double>, ptr %4696, align 64, !tbaa !26
  %4703 = select <8 x i1> %4344, <8 x double> %4702, <8 x double> %4701
  store <8 x double> %4703, ptr %4696, align 64, !tbaa !26
  %4704 = add nuw nsw i64 %4694, 1
  %4705 = icmp eq i64 %4704, %4691
  br i1 %4705, label %4706, label %4693, !llvm.loop !146

4706:                                             ; preds = %4693
  %4707 = load i64, ptr %142, align 8, !tbaa !22
  %4708 = getelementptr inbounds nuw i8, ptr %4376, i64 8688
  %4709 = load ptr, ptr %4708, align 16, !tbaa !92
  %4710 = getelementptr inbounds nuw i8, ptr %4376, i64 8696
  %4711 = load ptr, ptr %4710, align 8, !tbaa !51
  %4712 = getelementptr inbounds nuw i8, ptr %4376, i64 8704
  %4713 = load ptr, ptr %4712, align 64, !tbaa !61
  %4714 = icmp sgt i64 %4707, 0
  br i1 %4714, label %4715, label %4728

4715:                                             ; preds = %4706, %4715
  %4716 = phi i64 [ %4726, %4715 ], [ 0, %4706 ]
  %4717 = getelementptr inbounds nuw <8 x double>, ptr %4713, i64 %4716
  %4718 = getelementptr inbounds nuw <8 x double>, ptr %4711, i64 %4716
  %4719 = load <8 x double>, ptr %4718, align 64, !tbaa !26
  %4720 = load <8 x double>, ptr %4717, align 64, !tbaa !26
  %4721 = select <8 x i1> %4344, <8 x double> %4720, <8 x double> %4719
  store <8 x double> %4721, ptr %4717, align 64, !tbaa !26
  %4722 = getelementptr inbounds nuw <8 x double>, ptr %4709, i64 %4716
  %4723 = load <8 x double>, ptr %4722, align 64, !tbaa !26
  %4724 = load <8 x double>, ptr %4718, align 64, !tbaa !26
  %4725 = select <8 x i1> %4344, <8 x double> %4724, <8 x double> %4723
  store <8 x double> %4725, ptr %4718, align 64, !tbaa !26
  %4726 = add nuw nsw i64 %4716, 1
  %4727 = icmp eq i64 %4726, %4707
  br i1 %4727, label %4728, label %4715, !llvm.loop !146

4728:                                             ; preds = %4715, %4684, %4706, %4645
  %4729 = getelementptr inbounds nuw i8, ptr %4376, i64 4736
  %4730 = getelementptr inbounds nuw i8, ptr %4376, i64 3840
  %4731 = getelementptr inbounds nuw i8, ptr %4376, i64 2944
  br label %4747

4732:                                             ; preds = %4747
  %4733 = getelementptr inbounds nuw i8, ptr %4376, i64 8384
  %4734 = getelementptr inbounds nuw i8, ptr %4376, i64 6080
  %4735 = load <8 x double>, ptr %4734, align 64, !tbaa !26
  %4736 = fcmp ogt <8 x double> %4735, zeroinitializer
  %4737 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4738 = fcmp une <8 x double> %4737, splat (double 2.000000e+00)
  %4739 = and <8 x i1> %4736, %4738
  %4740 = select <8 x i1> %4739, <8 x i64> %4284, <8 x i64> zeroinitializer
  %4741 = load <8 x i64>, ptr %4733, align 64, !tbaa !26
  %4742 = and <8 x i64> %4741, %4372
  %4743 = or <8 x i64> %4740, %4742
  store <8 x i64> %4743, ptr %4733, align 64, !tbaa !26
  %4744 = add nuw nsw i64 %4374, 1
  %4745 = load i64, ptr %178, align 8, !tbaa !20
  %4746 = icmp slt i64 %4744, %4745
  br i1 %4746, label %4373, label %4759, !llvm.loop !147

4747:                                             ; preds = %4728, %4747
  %4748 = phi i64 [ 0, %4728 ], [ %4757, %4747 ]
  %4749 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4729, i64 0, i64 %4748
  %4750 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4730, i64 0, i64 %4748
  %4751 = load <8 x double>, ptr %4750, align 64, !tbaa !26
  %4752 = load <8 x double>, ptr %4749, align 64, !tbaa !26
  %4753 = select <8 x i1> %4344, <8 x double> %4752, <8 x double> %4751
  store <8 x double> %4753, ptr %4749, align 64, !tbaa !26
  %4754 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4731, i64 0, i64 %4748
  %4755 = load <8 x double>, ptr %4754, align 64, !tbaa !26
  %4756 = select <8 x i1> %4344, <8 x double> %4751, <8 x double> %4755
  store <8 x double> %4756, ptr %4750, align 64, !tbaa !26
  %4757 = add nuw nsw i64 %4748, 1
  %4758 = icmp eq i64 %4757, 14
  br i1 %4758, label %4732, label %4747, !llvm.loop !148

4759:                                             ; preds = %4732
  %4760 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4761 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4762 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4763 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4764 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4765 = fdiv <8 x double> %4762, %3998
  %4766 = icmp sgt i64 %4745, 0
  br label %4767

4767:                                             ; preds = %4343, %4759
  %4768 = phi <8 x double> [ %4765, %4759 ], [ %4008, %4343 ]
  %4769 = phi i1 [ %4766, %4759 ], [ false, %4343 ]
  %4770 = phi <8 x double> [ %4764, %4759 ], [ %3987, %4343 ]
  %4771 = phi <8 x double> [ %4763, %4759 ], [ %4272, %4343 ]
  %4772 = phi <8 x double> [ %4761, %4759 ], [ %4004, %4343 ]
  %4773 = phi <8 x double> [ %4760, %4759 ], [ %4002, %4343 ]
  %4774 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4775 = fadd <8 x double> %4774, %4773
  %4776 = select <8 x i1> %4344, <8 x double> %4774, <8 x double> %4775
  store <8 x double> %4776, ptr %158, align 64, !tbaa !26
  %4777 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4778 = select <8 x i1> %4344, <8 x double> %4777, <8 x double> %4773
  store <8 x double> %4778, ptr %173, align 64, !tbaa !26
  %4779 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4780 = fadd <8 x double> %4779, splat (double 1.000000e+00)
  %4781 = select <8 x i1> %4344, <8 x double> %4779, <8 x double> %4780
  store <8 x double> %4781, ptr %145, align 64, !tbaa !26
  %4782 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4783 = fcmp olt <8 x double> %4782, %4773
  %4784 = select <8 x i1> %4344, <8 x i1> splat (i1 true), <8 x i1> %4783
  %4785 = select <8 x i1> %4784, <8 x double> %4782, <8 x double> %4773
  store <8 x double> %4785, ptr %147, align 64, !tbaa !26
  %4786 = fcmp une <8 x double> %4772, zeroinitializer
  %4787 = fcmp ueq <8 x double> %3997, zeroinitializer
  %4788 = or <8 x i1> %4787, %4786
  %4789 = fcmp olt <8 x double> %4768, splat (double 1.800000e+00)
  %4790 = select <8 x i1> %4789, <8 x double> %4768, <8 x double> splat (double 1.800000e+00)
  %4791 = select <8 x i1> %4788, <8 x double> splat (double 1.800000e+00), <8 x double> %4790
  %4792 = fcmp ogt <8 x double> %4791, splat (double 2.000000e-01)
  %4793 = select <8 x i1> %4792, <8 x double> %4791, <8 x double> splat (double 2.000000e-01)
  %4794 = fmul <8 x double> %4773, %4793
  %4795 = fmul <8 x double> %4773, splat (double 4.000000e+00)
  %4796 = fcmp olt <8 x double> %4771, %4795
  %4797 = select <8 x i1> %4796, <8 x double> %4771, <8 x double> %4795
  %4798 = fcmp ogt <8 x double> %4794, %4797
  %4799 = select <8 x i1> %4798, <8 x double> %4794, <8 x double> %4797
  %4800 = select <8 x i1> %4344, <8 x double> %4771, <8 x double> zeroinitializer
  store <8 x double> %4800, ptr %181, align 64, !tbaa !26
  %4801 = select <8 x i1> %4344, <8 x double> %4770, <8 x double> zeroinitializer
  store <8 x double> %4801, ptr %183, align 64, !tbaa !26
  %4802 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %4803 = and <8 x i64> %4802, %4372
  store <8 x i64> %4803, ptr %174, align 64, !tbaa !26
  %4804 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %4805 = and <8 x i64> %4804, %4372
  store <8 x i64> %4805, ptr %175, align 64, !tbaa !26
  %4806 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %4807 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %4808 = select <8 x i1> %4344, <8 x double> %4807, <8 x double> %4806
  store <8 x double> %4808, ptr %168, align 64, !tbaa !26
  br i1 %4769, label %4809, label %5273

4809:                                             ; preds = %4767, %5266
  %4810 = phi i64 [ %5268, %5266 ], [ 0, %4767 ]
  %4811 = phi <8 x double> [ %5267, %5266 ], [ %4799, %4767 ]
  %4812 = load ptr, ptr %151, align 8, !tbaa !28
  %4813 = getelementptr inbounds nuw %struct.Piece, ptr %4812, i64 %4810
  %4814 = getelementptr inbounds nuw i8, ptr %4813, i64 3904
  %4815 = load <8 x double>, ptr %4814, align 64, !tbaa !26
  %4816 = getelementptr inbounds nuw i8, ptr %4813, i64 1472
  %4817 = load <8 x double>, ptr %4816, align 64, !tbaa !26
  %4818 = fmul <8 x double> %4817, splat (double 1.001000e+00)
  %4819 = fcmp ole <8 x double> %4815, %4818
  %4820 = getelementptr inbounds nuw i8, ptr %4813, i64 1600
  %4821 = load <8 x double>, ptr %4820, align 64, !tbaa !26
  %4822 = getelementptr inbounds nuw i8, ptr %4813, i64 4160
  %4823 = load <8 x double>, ptr %4822, align 64, !tbaa !26
  %4824 = fsub <8 x double> %4821, %4823
  %4825 = fmul <8 x double> %4821, splat (double 1.000000e-04)
  %4826 = fcmp ole <8 x double> %4824, %4825
  %4827 = getelementptr inbounds nuw i8, ptr %4813, i64 8320
  %4828 = load <8 x i64>, ptr %4827, align 64, !tbaa !26
  %4829 = and <8 x i64> %4828, %4284
  %4830 = getelementptr inbounds nuw i8, ptr %4813, i64 7680
  %4831 = load <8 x double>, ptr %4830, align 64, !tbaa !26
  %4832 = fcmp oeq <8 x double> %4831, zeroinitializer
  %4833 = and <8 x i1> %4819, %4832
  %4834 = fcmp oeq <8 x double> %4831, splat (double 1.000000e+00)
  %4835 = and <8 x i1> %4826, %4834
  %4836 = or <8 x i1> %4833, %4835
  %4837 = select <8 x i1> %4836, <8 x i64> %4829, <8 x i64> zeroinitializer
  %4838 = fadd <8 x double> %4831, splat (double 1.000000e+00)
  %4839 = icmp eq <8 x i64> %4837, zeroinitializer
  %4840 = select <8 x i1> %4839, <8 x double> %4831, <8 x double> %4838
  store <8 x double> %4840, ptr %4830, align 64, !tbaa !26
  %4841 = getelementptr inbounds nuw i8, ptr %4813, i64 8384
  %4842 = load <8 x i64>, ptr %4841, align 64, !tbaa !26
  %4843 = or <8 x i64> %4837, %4842
  store <8 x i64> %4843, ptr %4841, align 64, !tbaa !26
  %4844 = getelementptr inbounds nuw i8, ptr %4813, i64 896
  %4845 = load <8 x double>, ptr %4844, align 64, !tbaa !26
  %4846 = getelementptr inbounds nuw i8, ptr %4813, i64 6016
  %4847 = load <8 x double>, ptr %4846, align 64, !tbaa !26
  %4848 = getelementptr inbounds nuw i8, ptr %4813, i64 6080
  %4849 = load <8 x double>, ptr %4848, align 64, !tbaa !26
  %4850 = fadd <8 x double> %4847, %4849
  %4851 = fcmp ogt <8 x double> %4850, zeroinitializer
  %4852 = xor <8 x i64> %4828, splat (i64 -1)
  %4853 = and <8 x i64> %4284, %4852
  %4854 = fcmp une <8 x double> %4845, zeroinitializer
  %4855 = or <8 x i1> %4854, %4851
  %4856 = getelementptr inbounds nuw i8, ptr %4813, i64 3968
  %4857 = load <8 x double>, ptr %4856, align 64, !tbaa !26
  %4858 = fmul <8 x double> %4845, splat (double 3.000000e-03)
  %4859 = fcmp ogt <8 x double> %4858, splat (double 0x3E7AD7F29ABCAF48)
  %4860 = select <8 x i1> %4859, <8 x double> %4858, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4861 = fcmp ole <8 x double> %4857, %4860
  %4862 = select <8 x i1> %4861, <8 x i1> %4855, <8 x i1> zeroinitializer
  %4863 = select <8 x i1> %4862, <8 x i64> %4853, <8 x i64> zeroinitializer
  %4864 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4863)
  %4865 = icmp eq i64 %4864, 0
  br i1 %4865, label %5266, label %4866

4866:                                             ; preds = %4809
  %4867 = load i64, ptr %141, align 16, !tbaa !21
  %4868 = load i64, ptr %142, align 8, !tbaa !22
  %4869 = getelementptr inbounds nuw i8, ptr %4813, i64 3840
  %4870 = getelementptr inbounds nuw i8, ptr %4813, i64 4672
  %4871 = load <8 x double>, ptr %4870, align 64, !tbaa !26
  %4872 = getelementptr inbounds nuw i8, ptr %4813, i64 5952
  %4873 = load <8 x double>, ptr %4872, align 64, !tbaa !26
  %4874 = getelementptr inbounds nuw i8, ptr %4813, i64 832
  %4875 = load <8 x double>, ptr %4874, align 64, !tbaa !26
  %4876 = getelementptr inbounds nuw i8, ptr %4813, i64 8560
  %4877 = load ptr, ptr %4876, align 16, !tbaa !49
  %4878 = add nsw i64 %4867, -1
  %4879 = getelementptr inbounds <8 x double>, ptr %4877, i64 %4878
  %4880 = load <8 x double>, ptr %4879, align 64, !tbaa !26
  %4881 = fmul <8 x double> %4875, %4880
  %4882 = fneg <8 x double> %4857
  %4883 = fdiv <8 x double> %4882, %4881
  %4884 = fcmp ogt <8 x double> %4883, splat (double 0x3E7AD7F29ABCAF48)
  %4885 = select <8 x i1> %4884, <8 x double> %4883, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4886 = load <8 x double>, ptr %4813, align 64, !tbaa !26
  %4887 = fsub <8 x double> %4886, %4885
  %4888 = getelementptr inbounds nuw i8, ptr %4813, i64 2560
  %4889 = load <8 x double>, ptr %4888, align 64, !tbaa !26
  %4890 = getelementptr inbounds nuw i8, ptr %4813, i64 2624
  %4891 = load <8 x double>, ptr %4890, align 64, !tbaa !26
  %4892 = getelementptr inbounds nuw i8, ptr %4813, i64 2688
  %4893 = load <8 x double>, ptr %4892, align 64, !tbaa !26
  %4894 = getelementptr inbounds nuw i8, ptr %4813, i64 2752
  %4895 = load <8 x double>, ptr %4894, align 64, !tbaa !26
  %4896 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4887, <8 x double> %4895, <8 x double> %4893)
  %4897 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4887, <8 x double> %4896, <8 x double> %4891)
  %4898 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4887, <8 x double> %4897, <8 x double> %4889)
  %4899 = fsub <8 x double> %4871, %4898
  %4900 = getelementptr inbounds nuw i8, ptr %4813, i64 8528
  %4901 = load ptr, ptr %4900, align 16, !tbaa !48
  %4902 = getelementptr inbounds <8 x double>, ptr %4901, i64 %4878
  %4903 = load <8 x double>, ptr %4902, align 64, !tbaa !26
  %4904 = getelementptr inbounds nuw i8, ptr %4813, i64 8512
  %4905 = load i64, ptr %4904, align 64, !tbaa !31
  %4906 = icmp sgt i64 %4867, %4905
  br i1 %4906, label %4915, label %4907

4907:                                             ; preds = %4866
  %4908 = getelementptr inbounds nuw i8, ptr %4813, i64 640
  %4909 = load <8 x double>, ptr %4908, align 64, !tbaa !26
  %4910 = getelementptr inbounds nuw i8, ptr %4813, i64 8536
  %4911 = load ptr, ptr %4910, align 8, !tbaa !58
  %4912 = getelementptr inbounds <8 x double>, ptr %4911, i64 %4878
  %4913 = load <8 x double>, ptr %4912, align 64, !tbaa !26
  %4914 = fmul <8 x double> %4913, %4909
  br label %4935

4915:                                             ; preds = %4866
  %4916 = getelementptr inbounds nuw i8, ptr %4813, i64 384
  %4917 = load <8 x double>, ptr %4916, align 64, !tbaa !26
  %4918 = getelementptr inbounds nuw i8, ptr %4813, i64 448
  %4919 = load <8 x double>, ptr %4918, align 64, !tbaa !26
  %4920 = getelementptr inbounds nuw i8, ptr %4813, i64 512
  %4921 = load <8 x double>, ptr %4920, align 64, !tbaa !26
  %4922 = fmul <8 x double> %4903, %4921
  %4923 = fmul <8 x double> %4922, splat (double 0x3FD5555555555555)
  %4924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4919, <8 x double> splat (double 5.000000e-01), <8 x double> %4923)
  %4925 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4903, <8 x double> %4924, <8 x double> %4917)
  %4926 = getelementptr inbounds nuw i8, ptr %4813, i64 8536
  %4927 = load ptr, ptr %4926, align 8, !tbaa !58
  %4928 = getelementptr inbounds <8 x double>, ptr %4927, i64 %4878
  %4929 = load <8 x double>, ptr %4928, align 64, !tbaa !26
  %4930 = fmul <8 x double> %4929, %4921
  %4931 = fmul <8 x double> %4930, splat (double 0x3FD5555555555555)
  %4932 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4919, <8 x double> splat (double 5.000000e-01), <8 x double> %4931)
  %4933 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4929, <8 x double> %4932, <8 x double> %4917)
  %4934 = fmul <8 x double> %4929, %4933
  br label %4935

4935:                                             ; preds = %4915, %4907
  %4936 = phi ptr [ %4927, %4915 ], [ %4911, %4907 ]
  %4937 = phi <8 x double> [ %4925, %4915 ], [ %4909, %4907 ]
  %4938 = phi <8 x double> [ %4934, %4915 ], [ %4914, %4907 ]
  %4939 = phi ptr [ %4926, %4915 ], [ %4910, %4907 ]
  %4940 = sitofp i64 %4868 to double
  %4941 = insertelement <8 x double> poison, double %4940, i64 0
  %4942 = shufflevector <8 x double> %4941, <8 x double> poison, <8 x i32> zeroinitializer
  %4943 = fmul <8 x double> %4903, %4937
  %4944 = fdiv <8 x double> %4885, %4942
  %4945 = getelementptr i8, ptr %4901, i64 -64
  %4946 = getelementptr i8, ptr %4877, i64 -64
  %4947 = icmp sgt i64 %4867, 0
  br i1 %4947, label %4948, label %5049

4948:                                             ; preds = %4935
  %4949 = fmul <8 x double> %4903, %4937
  %4950 = getelementptr inbounds nuw i8, ptr %4813, i64 640
  %4951 = getelementptr inbounds nuw i8, ptr %4813, i64 384
  %4952 = getelementptr inbounds nuw i8, ptr %4813, i64 448
  %4953 = getelementptr inbounds nuw i8, ptr %4813, i64 512
  %4954 = getelementptr inbounds nuw i8, ptr %4813, i64 1536
  %4955 = getelementptr inbounds nuw i8, ptr %4813, i64 8608
  %4956 = icmp eq <8 x i64> %4863, zeroinitializer
  br label %4957

4957:                                             ; preds = %4948, %5036
  %4958 = phi <8 x double> [ %4903, %4948 ], [ %5017, %5036 ]
  %4959 = phi <8 x double> [ %4949, %4948 ], [ %5016, %5036 ]
  %4960 = phi <8 x double> [ %4898, %4948 ], [ %5018, %5036 ]
  %4961 = phi <8 x double> [ %4880, %4948 ], [ %5019, %5036 ]
  %4962 = phi i64 [ %4878, %4948 ], [ %5042, %5036 ]
  %4963 = icmp eq i64 %4962, 0
  br i1 %4963, label %4964, label %4968

4964:                                             ; preds = %4957
  %4965 = fdiv <8 x double> zeroinitializer, %4960
  %4966 = fsub <8 x double> %4959, %4959
  %4967 = fmul <8 x double> %4965, %4966
  br label %5013

4968:                                             ; preds = %4957
  %4969 = getelementptr <8 x double>, ptr %4945, i64 %4962
  %4970 = load <8 x double>, ptr %4969, align 64, !tbaa !26
  %4971 = load i64, ptr %4904, align 64, !tbaa !31
  %4972 = icmp sgt i64 %4962, %4971
  br i1 %4972, label %4975, label %4973

4973:                                             ; preds = %4968
  %4974 = load <8 x double>, ptr %4950, align 64, !tbaa !26
  br label %4983

4975:                                             ; preds = %4968
  %4976 = load <8 x double>, ptr %4951, align 64, !tbaa !26
  %4977 = load <8 x double>, ptr %4952, align 64, !tbaa !26
  %4978 = load <8 x double>, ptr %4953, align 64, !tbaa !26
  %4979 = fmul <8 x double> %4970, %4978
  %4980 = fmul <8 x double> %4979, splat (double 0x3FD5555555555555)
  %4981 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4977, <8 x double> splat (double 5.000000e-01), <8 x double> %4980)
  %4982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4970, <8 x double> %4981, <8 x double> %4976)
  br label %4983

4983:                                             ; preds = %4973, %4975
  %4984 = phi <8 x double> [ %4982, %4975 ], [ %4974, %4973 ]
  %4985 = fmul <8 x double> %4970, %4984
  %4986 = icmp slt i64 %4962, %4971
  br i1 %4986, label %4987, label %4994

4987:                                             ; preds = %4983
  %4988 = load ptr, ptr %4955, align 32, !tbaa !74
  %4989 = getelementptr inbounds nuw <8 x double>, ptr %4988, i64 %4962
  %4990 = load <8 x double>, ptr %4989, align 64, !tbaa !26
  %4991 = load <8 x double>, ptr %4954, align 64, !tbaa !26
  %4992 = fmul <8 x double> %4990, %4991
  %4993 = fmul <8 x double> %4990, %4991
  br label %5003

4994:                                             ; preds = %4983
  %4995 = load <8 x double>, ptr %4954, align 64, !tbaa !26
  %4996 = load ptr, ptr %4955, align 32, !tbaa !74
  %4997 = getelementptr inbounds nuw <8 x double>, ptr %4996, i64 %4962
  %4998 = load <8 x double>, ptr %4997, align 64, !tbaa !26
  %4999 = fsub <8 x double> %4898, %4995
  %5000 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4998, <8 x double> %4999, <8 x double> %4995)
  %5001 = fsub <8 x double> %4871, %4995
  %5002 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4998, <8 x double> %5001, <8 x double> %4995)
  br label %5003

5003:                                             ; preds = %4994, %4987
  %5004 = phi <8 x double> [ %4992, %4987 ], [ %5000, %4994 ]
  %5005 = phi <8 x double> [ %4993, %4987 ], [ %5002, %4994 ]
  %5006 = fsub <8 x double> %5005, %5004
  %5007 = fsub <8 x double> %4960, %5004
  %5008 = fdiv <8 x double> %5006, %5007
  %5009 = fsub <8 x double> %4985, %4959
  %5010 = fmul <8 x double> %5009, %5008
  %5011 = getelementptr <8 x double>, ptr %4946, i64 %4962
  %5012 = load <8 x double>, ptr %5011, align 64, !tbaa !26
  br label %5013

5013:                                             ; preds = %5003, %4964
  %5014 = phi <8 x double> [ %5010, %5003 ], [ %4967, %4964 ]
  %5015 = phi <8 x double> [ %5008, %5003 ], [ %4965, %4964 ]
  %5016 = phi <8 x double> [ %4985, %5003 ], [ %4959, %4964 ]
  %5017 = phi <8 x double> [ %4970, %5003 ], [ %4958, %4964 ]
  %5018 = phi <8 x double> [ %5004, %5003 ], [ zeroinitializer, %4964 ]
  %5019 = phi <8 x double> [ %5012, %5003 ], [ %4961, %4964 ]
  %5020 = getelementptr inbounds nuw <8 x double>, ptr %4877, i64 %4962
  %5021 = fsub <8 x double> %5019, %4961
  %5022 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5021, <8 x double> %5015, <8 x double> %4961)
  %5023 = load <8 x double>, ptr %5020, align 64, !tbaa !26
  %5024 = select <8 x i1> %4956, <8 x double> %5023, <8 x double> %5022
  store <8 x double> %5024, ptr %5020, align 64, !tbaa !26
  %5025 = getelementptr inbounds nuw <8 x double>, ptr %4901, i64 %4962
  %5026 = load i64, ptr %4904, align 64, !tbaa !31
  %5027 = icmp slt i64 %4962, %5026
  br i1 %5027, label %5028, label %5030

5028:                                             ; preds = %5013
  %5029 = load <8 x double>, ptr %4950, align 64, !tbaa !26
  br label %5036

5030:                                             ; preds = %5013
  %5031 = load <8 x double>, ptr %4951, align 64, !tbaa !26
  %5032 = load <8 x double>, ptr %4952, align 64, !tbaa !26
  %5033 = load <8 x double>, ptr %4953, align 64, !tbaa !26
  %5034 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4958, <8 x double> %5033, <8 x double> %5032)
  %5035 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4958, <8 x double> %5034, <8 x double> %5031)
  br label %5036

5036:                                             ; preds = %5030, %5028
  %5037 = phi <8 x double> [ %5029, %5028 ], [ %5035, %5030 ]
  %5038 = fdiv <8 x double> %5014, %5037
  %5039 = fadd <8 x double> %4958, %5038
  %5040 = load <8 x double>, ptr %5025, align 64, !tbaa !26
  %5041 = select <8 x i1> %4956, <8 x double> %5040, <8 x double> %5039
  store <8 x double> %5041, ptr %5025, align 64, !tbaa !26
  %5042 = add nsw i64 %4962, -1
  %5043 = icmp sgt i64 %4962, 0
  br i1 %5043, label %4957, label %5044, !llvm.loop !149

5044:                                             ; preds = %5036
  %5045 = load ptr, ptr %4939, align 8, !tbaa !58
  %5046 = load i64, ptr %141, align 16, !tbaa !21
  %5047 = load i64, ptr %4904, align 64, !tbaa !31
  %5048 = add nsw i64 %5046, -1
  br label %5049

5049:                                             ; preds = %5044, %4935
  %5050 = phi i64 [ %5048, %5044 ], [ %4878, %4935 ]
  %5051 = phi i64 [ %5047, %5044 ], [ %4905, %4935 ]
  %5052 = phi i64 [ %5046, %5044 ], [ %4867, %4935 ]
  %5053 = phi ptr [ %5045, %5044 ], [ %4936, %4935 ]
  %5054 = getelementptr inbounds <8 x double>, ptr %5053, i64 %5050
  %5055 = load <8 x double>, ptr %5054, align 64, !tbaa !26
  %5056 = icmp sgt i64 %5052, %5051
  br i1 %5056, label %5060, label %5057

5057:                                             ; preds = %5049
  %5058 = getelementptr inbounds nuw i8, ptr %4813, i64 640
  %5059 = load <8 x double>, ptr %5058, align 64, !tbaa !26
  br label %5071

5060:                                             ; preds = %5049
  %5061 = getelementptr inbounds nuw i8, ptr %4813, i64 384
  %5062 = load <8 x double>, ptr %5061, align 64, !tbaa !26
  %5063 = getelementptr inbounds nuw i8, ptr %4813, i64 448
  %5064 = load <8 x double>, ptr %5063, align 64, !tbaa !26
  %5065 = getelementptr inbounds nuw i8, ptr %4813, i64 512
  %5066 = load <8 x double>, ptr %5065, align 64, !tbaa !26
  %5067 = fmul <8 x double> %5055, %5066
  %5068 = fmul <8 x double> %5067, splat (double 0x3FD5555555555555)
  %5069 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5064, <8 x double> splat (double 5.000000e-01), <8 x double> %5068)
  %5070 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5055, <8 x double> %5069, <8 x double> %5062)
  br label %5071

5071:                                             ; preds = %5060, %5057
  %5072 = phi <8 x double> [ %5059, %5057 ], [ %5070, %5060 ]
  %5073 = getelementptr i8, ptr %5053, i64 -64
  %5074 = icmp sgt i64 %5052, 0
  br i1 %5074, label %5075, label %5084

5075:                                             ; preds = %5071
  %5076 = fmul <8 x double> %5055, %5072
  %5077 = getelementptr inbounds nuw i8, ptr %4813, i64 640
  %5078 = getelementptr inbounds nuw i8, ptr %4813, i64 384
  %5079 = getelementptr inbounds nuw i8, ptr %4813, i64 448
  %5080 = getelementptr inbounds nuw i8, ptr %4813, i64 512
  %5081 = getelementptr inbounds nuw i8, ptr %4813, i64 1536
  %5082 = getelementptr inbounds nuw i8, ptr %4813, i64 8608
  %5083 = icmp eq <8 x i64> %4863, zeroinitializer
  br label %5092

5084:                                             ; preds = %5156, %5071
  %5085 = icmp sgt i64 %4868, 0
  br i1 %5085, label %5086, label %5164

5086:                                             ; preds = %5084
  %5087 = getelementptr inbounds nuw i8, ptr %4813, i64 8696
  %5088 = icmp eq <8 x i64> %4863, zeroinitializer
  %5089 = getelementptr inbounds nuw i8, ptr %4813, i64 8704
  %5090 = getelementptr inbounds nuw i8, ptr %4813, i64 8648
  %5091 = getelementptr inbounds nuw i8, ptr %4813, i64 8656
  br label %5235

5092:                                             ; preds = %5075, %5156
  %5093 = phi <8 x double> [ %5055, %5075 ], [ %5139, %5156 ]
  %5094 = phi <8 x double> [ %5076, %5075 ], [ %5140, %5156 ]
  %5095 = phi <8 x double> [ %4898, %5075 ], [ %5138, %5156 ]
  %5096 = phi i64 [ %5050, %5075 ], [ %5162, %5156 ]
  %5097 = icmp eq i64 %5096, 0
  %5098 = load i64, ptr %4904, align 64, !tbaa !31
  br i1 %5097, label %5137, label %5099

5099:                                             ; preds = %5092
  %5100 = getelementptr <8 x double>, ptr %5073, i64 %5096
  %5101 = load <8 x double>, ptr %5100, align 64, !tbaa !26
  %5102 = icmp sgt i64 %5096, %5098
  br i1 %5102, label %5105, label %5103

5103:                                             ; preds = %5099
  %5104 = load <8 x double>, ptr %5077, align 64, !tbaa !26
  br label %5113

5105:                                             ; preds = %5099
  %5106 = load <8 x double>, ptr %5078, align 64, !tbaa !26
  %5107 = load <8 x double>, ptr %5079, align 64, !tbaa !26
  %5108 = load <8 x double>, ptr %5080, align 64, !tbaa !26
  %5109 = fmul <8 x double> %5101, %5108
  %5110 = fmul <8 x double> %5109, splat (double 0x3FD5555555555555)
  %5111 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5107, <8 x double> splat (double 5.000000e-01), <8 x double> %5110)
  %5112 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5101, <8 x double> %5111, <8 x double> %5106)
  br label %5113

5113:                                             ; preds = %5103, %5105
  %5114 = phi <8 x double> [ %5112, %5105 ], [ %5104, %5103 ]
  %5115 = fmul <8 x double> %5101, %5114
  %5116 = icmp slt i64 %5096, %5098
  br i1 %5116, label %5117, label %5124

5117:                                             ; preds = %5113
  %5118 = load ptr, ptr %5082, align 32, !tbaa !74
  %5119 = getelementptr inbounds nuw <8 x double>, ptr %5118, i64 %5096
  %5120 = load <8 x double>, ptr %5119, align 64, !tbaa !26
  %5121 = load <8 x double>, ptr %5081, align 64, !tbaa !26
  %5122 = fmul <8 x double> %5120, %5121
  %5123 = fmul <8 x double> %5120, %5121
  br label %5133

5124:                                             ; preds = %5113
  %5125 = load <8 x double>, ptr %5081, align 64, !tbaa !26
  %5126 = load ptr, ptr %5082, align 32, !tbaa !74
  %5127 = getelementptr inbounds nuw <8 x double>, ptr %5126, i64 %5096
  %5128 = load <8 x double>, ptr %5127, align 64, !tbaa !26
  %5129 = fsub <8 x double> %4898, %5125
  %5130 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5128, <8 x double> %5129, <8 x double> %5125)
  %5131 = fsub <8 x double> %4871, %5125
  %5132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5128, <8 x double> %5131, <8 x double> %5125)
  br label %5133

5133:                                             ; preds = %5124, %5117
  %5134 = phi <8 x double> [ %5122, %5117 ], [ %5130, %5124 ]
  %5135 = phi <8 x double> [ %5123, %5117 ], [ %5132, %5124 ]
  %5136 = fsub <8 x double> %5135, %5134
  br label %5137

5137:                                             ; preds = %5092, %5133
  %5138 = phi <8 x double> [ %5134, %5133 ], [ zeroinitializer, %5092 ]
  %5139 = phi <8 x double> [ %5101, %5133 ], [ %5093, %5092 ]
  %5140 = phi <8 x double> [ %5115, %5133 ], [ %5094, %5092 ]
  %5141 = phi <8 x double> [ %5136, %5133 ], [ zeroinitializer, %5092 ]
  %5142 = fsub <8 x double> %5095, %5138
  %5143 = fdiv <8 x double> %5141, %5142
  %5144 = fsub <8 x double> %5140, %5094
  %5145 = fmul <8 x double> %5144, %5143
  %5146 = getelementptr inbounds nuw <8 x double>, ptr %5053, i64 %5096
  %5147 = icmp slt i64 %5096, %5098
  br i1 %5147, label %5148, label %5150

5148:                                             ; preds = %5137
  %5149 = load <8 x double>, ptr %5077, align 64, !tbaa !26
  br label %5156

5150:                                             ; preds = %5137
  %5151 = load <8 x double>, ptr %5078, align 64, !tbaa !26
  %5152 = load <8 x double>, ptr %5079, align 64, !tbaa !26
  %5153 = load <8 x double>, ptr %5080, align 64, !tbaa !26
  %5154 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5093, <8 x double> %5153, <8 x double> %5152)
  %5155 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5093, <8 x double> %5154, <8 x double> %5151)
  br label %5156

5156:                                             ; preds = %5150, %5148
  %5157 = phi <8 x double> [ %5149, %5148 ], [ %5155, %5150 ]
  %5158 = fdiv <8 x double> %5145, %5157
  %5159 = fadd <8 x double> %5093, %5158
  %5160 = load <8 x double>, ptr %5146, align 64, !tbaa !26
  %5161 = select <8 x i1> %5083, <8 x double> %5160, <8 x double> %5159
  store <8 x double> %5161, ptr %5146, align 64, !tbaa !26
  %5162 = add nsw i64 %5096, -1
  %5163 = icmp sgt i64 %5096, 0
  br i1 %5163, label %5092, label %5084, !llvm.loop !149

5164:                                             ; preds = %5235, %5084
  %5165 = getelementptr inbounds nuw i8, ptr %4813, i64 8696
  %5166 = load ptr, ptr %5165, align 8, !tbaa !51
  %5167 = getelementptr inbounds <8 x double>, ptr %5166, i64 %4868
  %5168 = getelementptr inbounds nuw i8, ptr %4813, i64 1408
  %5169 = load <8 x double>, ptr %5168, align 64, !tbaa !26
  %5170 = load <8 x double>, ptr %5167, align 64, !tbaa !26
  %5171 = icmp eq <8 x i64> %4863, zeroinitializer
  %5172 = select <8 x i1> %5171, <8 x double> %5170, <8 x double> %5169
  store <8 x double> %5172, ptr %5167, align 64, !tbaa !26
  %5173 = getelementptr inbounds nuw i8, ptr %4813, i64 8704
  %5174 = load ptr, ptr %5173, align 64, !tbaa !61
  %5175 = getelementptr inbounds <8 x double>, ptr %5174, i64 %4868
  %5176 = load <8 x double>, ptr %5168, align 64, !tbaa !26
  %5177 = load <8 x double>, ptr %5175, align 64, !tbaa !26
  %5178 = select <8 x i1> %5171, <8 x double> %5177, <8 x double> %5176
  store <8 x double> %5178, ptr %5175, align 64, !tbaa !26
  %5179 = getelementptr inbounds nuw i8, ptr %4813, i64 4736
  %5180 = fneg <8 x double> %4899
  %5181 = getelementptr inbounds nuw i8, ptr %4813, i64 768
  %5182 = load <8 x double>, ptr %4869, align 64, !tbaa !26
  %5183 = select <8 x i1> %5171, <8 x double> %5182, <8 x double> %4887
  store <8 x double> %5183, ptr %4869, align 64, !tbaa !26
  %5184 = getelementptr inbounds nuw i8, ptr %4813, i64 3904
  %5185 = load <8 x double>, ptr %5184, align 64, !tbaa !26
  %5186 = select <8 x i1> %5171, <8 x double> %5185, <8 x double> %4898
  store <8 x double> %5186, ptr %5184, align 64, !tbaa !26
  %5187 = getelementptr inbounds nuw i8, ptr %4813, i64 4672
  %5188 = load <8 x double>, ptr %5187, align 64, !tbaa !26
  %5189 = select <8 x i1> %5171, <8 x double> %5188, <8 x double> %4898
  store <8 x double> %5189, ptr %5187, align 64, !tbaa !26
  %5190 = getelementptr inbounds nuw i8, ptr %4813, i64 4032
  %5191 = load <8 x double>, ptr %5190, align 64, !tbaa !26
  %5192 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5180, <8 x double> %4881, <8 x double> %5191)
  %5193 = select <8 x i1> %5171, <8 x double> %5191, <8 x double> %5192
  store <8 x double> %5193, ptr %5190, align 64, !tbaa !26
  %5194 = getelementptr inbounds nuw i8, ptr %4813, i64 3968
  %5195 = load <8 x double>, ptr %5194, align 64, !tbaa !26
  %5196 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4899, <8 x double> %4881, <8 x double> %5195)
  %5197 = select <8 x i1> %5171, <8 x double> %5195, <8 x double> %5196
  store <8 x double> %5197, ptr %5194, align 64, !tbaa !26
  %5198 = getelementptr inbounds nuw i8, ptr %4813, i64 4288
  %5199 = load <8 x double>, ptr %5198, align 64, !tbaa !26
  %5200 = load <8 x double>, ptr %5181, align 64, !tbaa !26
  %5201 = fneg <8 x double> %5200
  %5202 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5201, <8 x double> %4873, <8 x double> %4943)
  %5203 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4899, <8 x double> %5202, <8 x double> %5199)
  %5204 = select <8 x i1> %5171, <8 x double> %5199, <8 x double> %5203
  store <8 x double> %5204, ptr %5198, align 64, !tbaa !26
  %5205 = load <8 x double>, ptr %5179, align 64, !tbaa !26
  %5206 = select <8 x i1> %5171, <8 x double> %5205, <8 x double> %4887
  store <8 x double> %5206, ptr %5179, align 64, !tbaa !26
  %5207 = getelementptr inbounds nuw i8, ptr %4813, i64 4800
  %5208 = load <8 x double>, ptr %5207, align 64, !tbaa !26
  %5209 = select <8 x i1> %5171, <8 x double> %5208, <8 x double> %4898
  store <8 x double> %5209, ptr %5207, align 64, !tbaa !26
  %5210 = getelementptr inbounds nuw i8, ptr %4813, i64 5568
  %5211 = load <8 x double>, ptr %5210, align 64, !tbaa !26
  %5212 = select <8 x i1> %5171, <8 x double> %5211, <8 x double> %4898
  store <8 x double> %5212, ptr %5210, align 64, !tbaa !26
  %5213 = getelementptr inbounds nuw i8, ptr %4813, i64 4928
  %5214 = load <8 x double>, ptr %5213, align 64, !tbaa !26
  %5215 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5180, <8 x double> %4881, <8 x double> %5214)
  %5216 = select <8 x i1> %5171, <8 x double> %5214, <8 x double> %5215
  store <8 x double> %5216, ptr %5213, align 64, !tbaa !26
  %5217 = getelementptr inbounds nuw i8, ptr %4813, i64 4864
  %5218 = load <8 x double>, ptr %5217, align 64, !tbaa !26
  %5219 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4899, <8 x double> %4881, <8 x double> %5218)
  %5220 = select <8 x i1> %5171, <8 x double> %5218, <8 x double> %5219
  store <8 x double> %5220, ptr %5217, align 64, !tbaa !26
  %5221 = getelementptr inbounds nuw i8, ptr %4813, i64 5184
  %5222 = load <8 x double>, ptr %5221, align 64, !tbaa !26
  %5223 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5201, <8 x double> %4873, <8 x double> %4938)
  %5224 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4899, <8 x double> %5223, <8 x double> %5222)
  %5225 = select <8 x i1> %5171, <8 x double> %5222, <8 x double> %5224
  store <8 x double> %5225, ptr %5221, align 64, !tbaa !26
  %5226 = load <8 x i64>, ptr %4827, align 64, !tbaa !26
  %5227 = or <8 x i64> %5226, %4863
  store <8 x i64> %5227, ptr %4827, align 64, !tbaa !26
  %5228 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %5229 = fmul <8 x double> %5228, splat (double 4.000000e+01)
  %5230 = fcmp olt <8 x double> %4811, %5229
  %5231 = select <8 x i1> %5230, <8 x double> %4811, <8 x double> %5229
  %5232 = icmp ne <8 x i64> %4863, zeroinitializer
  %5233 = select <8 x i1> %4854, <8 x i1> %5232, <8 x i1> zeroinitializer
  %5234 = select <8 x i1> %5233, <8 x double> %5231, <8 x double> %4811
  br label %5266

5235:                                             ; preds = %5086, %5235
  %5236 = phi i64 [ 0, %5086 ], [ %5264, %5235 ]
  %5237 = uitofp nneg i64 %5236 to double
  %5238 = insertelement <8 x double> poison, double %5237, i64 0
  %5239 = shufflevector <8 x double> %5238, <8 x double> poison, <8 x i32> zeroinitializer
  %5240 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5239, <8 x double> %4944, <8 x double> %4887)
  %5241 = load <8 x double>, ptr %4888, align 64, !tbaa !26
  %5242 = load <8 x double>, ptr %4890, align 64, !tbaa !26
  %5243 = load <8 x double>, ptr %4892, align 64, !tbaa !26
  %5244 = load <8 x double>, ptr %4894, align 64, !tbaa !26
  %5245 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5240, <8 x double> %5244, <8 x double> %5243)
  %5246 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5240, <8 x double> %5245, <8 x double> %5242)
  %5247 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5240, <8 x double> %5246, <8 x double> %5241)
  %5248 = load ptr, ptr %5087, align 8, !tbaa !51
  %5249 = getelementptr inbounds nuw <8 x double>, ptr %5248, i64 %5236
  %5250 = load <8 x double>, ptr %5249, align 64, !tbaa !26
  %5251 = select <8 x i1> %5088, <8 x double> %5250, <8 x double> %5247
  store <8 x double> %5251, ptr %5249, align 64, !tbaa !26
  %5252 = load ptr, ptr %5089, align 64, !tbaa !61
  %5253 = getelementptr inbounds nuw <8 x double>, ptr %5252, i64 %5236
  %5254 = load <8 x double>, ptr %5253, align 64, !tbaa !26
  %5255 = select <8 x i1> %5088, <8 x double> %5254, <8 x double> %5247
  store <8 x double> %5255, ptr %5253, align 64, !tbaa !26
  %5256 = load ptr, ptr %5090, align 8, !tbaa !52
  %5257 = getelementptr inbounds nuw <8 x double>, ptr %5256, i64 %5236
  %5258 = load <8 x double>, ptr %5257, align 64, !tbaa !26
  %5259 = select <8 x i1> %5088, <8 x double> %5258, <8 x double> %4873
  store <8 x double> %5259, ptr %5257, align 64, !tbaa !26
  %5260 = load ptr, ptr %5091, align 16, !tbaa !63
  %5261 = getelementptr inbounds nuw <8 x double>, ptr %5260, i64 %5236
  %5262 = load <8 x double>, ptr %5261, align 64, !tbaa !26
  %5263 = select <8 x i1> %5088, <8 x double> %5262, <8 x double> %4873
  store <8 x double> %5263, ptr %5261, align 64, !tbaa !26
  %5264 = add nuw nsw i64 %5236, 1
  %5265 = icmp eq i64 %5264, %4868
  br i1 %5265, label %5164, label %5235, !llvm.loop !150

5266:                                             ; preds = %5164, %4809
  %5267 = phi <8 x double> [ %5234, %5164 ], [ %4811, %4809 ]
  %5268 = add nuw nsw i64 %4810, 1
  %5269 = load i64, ptr %178, align 8, !tbaa !20
  %5270 = icmp slt i64 %5268, %5269
  br i1 %5270, label %4809, label %5271, !llvm.loop !151

5271:                                             ; preds = %5266
  %5272 = load <8 x double>, ptr %158, align 64, !tbaa !26
  br label %5273

5273:                                             ; preds = %5271, %4767
  %5274 = phi <8 x double> [ %4776, %4767 ], [ %5272, %5271 ]
  %5275 = phi <8 x double> [ %4799, %4767 ], [ %5267, %5271 ]
  %5276 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %5277 = select <8 x i1> %4344, <8 x double> %5276, <8 x double> %5275
  store <8 x double> %5277, ptr %161, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %4284, ptr %13, align 64, !tbaa !26
  %5278 = load ptr, ptr %238, align 64, !tbaa !39
  %5279 = getelementptr inbounds nuw i8, ptr %5278, i64 64
  store <8 x double> %5274, ptr %5278, align 64, !tbaa !26
  %5280 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %5281 = getelementptr inbounds nuw i8, ptr %5278, i64 128
  store <8 x double> %5280, ptr %5279, align 64, !tbaa !26
  %5282 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5283 = getelementptr inbounds nuw i8, ptr %5278, i64 192
  store <8 x double> %5282, ptr %5281, align 64, !tbaa !26
  %5284 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %5285 = getelementptr inbounds nuw i8, ptr %5278, i64 256
  store <8 x double> %5284, ptr %5283, align 64, !tbaa !26
  %5286 = load i64, ptr %178, align 8, !tbaa !20
  %5287 = icmp sgt i64 %5286, 0
  br i1 %5287, label %5292, label %5288

5288:                                             ; preds = %5292, %5273
  %5289 = phi ptr [ %5285, %5273 ], [ %5298, %5292 ]
  %5290 = load i64, ptr %240, align 8, !tbaa !152
  %5291 = icmp eq i64 %5290, 0
  br i1 %5291, label %5427, label %5302

5292:                                             ; preds = %5273, %5292
  %5293 = phi ptr [ %5298, %5292 ], [ %5285, %5273 ]
  %5294 = phi i64 [ %5299, %5292 ], [ 0, %5273 ]
  %5295 = load ptr, ptr %151, align 8, !tbaa !28
  %5296 = getelementptr inbounds nuw %struct.Piece, ptr %5295, i64 %5294, i32 35
  %5297 = load <8 x double>, ptr %5296, align 64, !tbaa !26
  %5298 = getelementptr inbounds nuw i8, ptr %5293, i64 64
  store <8 x double> %5297, ptr %5293, align 64, !tbaa !26
  %5299 = add nuw nsw i64 %5294, 1
  %5300 = load i64, ptr %178, align 8, !tbaa !20
  %5301 = icmp slt i64 %5299, %5300
  br i1 %5301, label %5292, label %5288, !llvm.loop !153

5302:                                             ; preds = %5288
  %5303 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %5304 = getelementptr inbounds nuw i8, ptr %5289, i64 64
  store <8 x double> %5303, ptr %5289, align 64, !tbaa !26
  %5305 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %5306 = getelementptr inbounds nuw i8, ptr %5289, i64 128
  store <8 x double> %5305, ptr %5304, align 64, !tbaa !26
  %5307 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5308 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %5309 = fsub <8 x double> %5307, %5308
  %5310 = fcmp ogt <8 x double> %5309, zeroinitializer
  %5311 = select <8 x i1> %5310, <8 x double> %5309, <8 x double> zeroinitializer
  store <8 x double> %5311, ptr %5306, align 64, !tbaa !26
  %5312 = load i64, ptr %178, align 8, !tbaa !20
  %5313 = icmp sgt i64 %5312, 0
  br i1 %5313, label %5314, label %5427

5314:                                             ; preds = %5302
  %5315 = getelementptr inbounds nuw i8, ptr %5289, i64 192
  br label %5316

5316:                                             ; preds = %5314, %5316
  %5317 = phi ptr [ %5423, %5316 ], [ %5315, %5314 ]
  %5318 = phi i64 [ %5424, %5316 ], [ 0, %5314 ]
  %5319 = load ptr, ptr %151, align 8, !tbaa !28
  %5320 = getelementptr inbounds nuw %struct.Piece, ptr %5319, i64 %5318
  %5321 = getelementptr inbounds nuw i8, ptr %5320, i64 8528
  %5322 = load ptr, ptr %5321, align 16, !tbaa !48
  %5323 = load i64, ptr %141, align 16, !tbaa !21
  %5324 = getelementptr <8 x double>, ptr %5322, i64 %5323
  %5325 = getelementptr i8, ptr %5324, i64 -64
  %5326 = load <8 x double>, ptr %5325, align 64, !tbaa !26
  %5327 = getelementptr inbounds nuw i8, ptr %5320, i64 7232
  %5328 = load <8 x double>, ptr %5327, align 64, !tbaa !26
  %5329 = getelementptr inbounds nuw i8, ptr %5320, i64 5952
  %5330 = load <8 x double>, ptr %5329, align 64, !tbaa !26
  %5331 = fsub <8 x double> %5330, %5326
  %5332 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5328, <8 x double> %5331, <8 x double> %5326)
  %5333 = getelementptr inbounds nuw i8, ptr %5317, i64 64
  store <8 x double> %5332, ptr %5317, align 64, !tbaa !26
  %5334 = getelementptr inbounds nuw i8, ptr %5320, i64 6784
  %5335 = load <8 x double>, ptr %5334, align 64, !tbaa !26
  %5336 = getelementptr inbounds nuw i8, ptr %5317, i64 128
  store <8 x double> %5335, ptr %5333, align 64, !tbaa !26
  %5337 = load <8 x double>, ptr %5320, align 64, !tbaa !26
  %5338 = getelementptr inbounds nuw i8, ptr %5320, i64 3840
  %5339 = load <8 x double>, ptr %5338, align 64, !tbaa !26
  %5340 = fsub <8 x double> %5337, %5339
  %5341 = getelementptr inbounds nuw i8, ptr %5317, i64 192
  store <8 x double> %5340, ptr %5336, align 64, !tbaa !26
  %5342 = getelementptr inbounds nuw i8, ptr %5320, i64 4160
  %5343 = load <8 x double>, ptr %5342, align 64, !tbaa !26
  %5344 = getelementptr inbounds nuw i8, ptr %5317, i64 256
  store <8 x double> %5343, ptr %5341, align 64, !tbaa !26
  %5345 = getelementptr inbounds nuw i8, ptr %5320, i64 4096
  %5346 = load <8 x double>, ptr %5345, align 64, !tbaa !26
  %5347 = getelementptr inbounds nuw i8, ptr %5317, i64 320
  store <8 x double> %5346, ptr %5344, align 64, !tbaa !26
  %5348 = getelementptr inbounds nuw i8, ptr %5320, i64 3968
  %5349 = load <8 x double>, ptr %5348, align 64, !tbaa !26
  %5350 = getelementptr inbounds nuw i8, ptr %5317, i64 384
  store <8 x double> %5349, ptr %5347, align 64, !tbaa !26
  %5351 = getelementptr inbounds nuw i8, ptr %5320, i64 4224
  %5352 = load <8 x double>, ptr %5351, align 64, !tbaa !26
  %5353 = getelementptr inbounds nuw i8, ptr %5317, i64 448
  store <8 x double> %5352, ptr %5350, align 64, !tbaa !26
  %5354 = getelementptr inbounds nuw i8, ptr %5320, i64 8648
  %5355 = load i64, ptr %142, align 8, !tbaa !22
  %5356 = sitofp i64 %5355 to double
  %5357 = tail call double @llvm.fmuladd.f64(double %5356, double 7.500000e-01, double -5.000000e-01)
  %5358 = fcmp ogt double %5357, 0.000000e+00
  %5359 = select i1 %5358, double %5357, double 0.000000e+00
  %5360 = fptosi double %5359 to i64
  %5361 = add nsw i64 %5355, -2
  %5362 = tail call i64 @llvm.smin.i64(i64 %5361, i64 %5360)
  %5363 = sitofp i64 %5362 to double
  %5364 = fsub double %5357, %5363
  %5365 = fsub double 1.000000e+00, %5364
  %5366 = insertelement <8 x double> poison, double %5365, i64 0
  %5367 = shufflevector <8 x double> %5366, <8 x double> poison, <8 x i32> zeroinitializer
  %5368 = load ptr, ptr %5354, align 8, !tbaa !52
  %5369 = getelementptr inbounds <8 x double>, ptr %5368, i64 %5362
  %5370 = load <8 x double>, ptr %5369, align 64, !tbaa !26
  %5371 = insertelement <8 x double> poison, double %5364, i64 0
  %5372 = shufflevector <8 x double> %5371, <8 x double> poison, <8 x i32> zeroinitializer
  %5373 = getelementptr i8, ptr %5369, i64 64
  %5374 = load <8 x double>, ptr %5373, align 64, !tbaa !26
  %5375 = fmul <8 x double> %5374, %5372
  %5376 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5367, <8 x double> %5370, <8 x double> %5375)
  store <8 x double> %5376, ptr %5353, align 64, !tbaa !26
  %5377 = load i64, ptr %142, align 8, !tbaa !22
  %5378 = sitofp i64 %5377 to double
  %5379 = tail call double @llvm.fmuladd.f64(double %5378, double 5.000000e-01, double -5.000000e-01)
  %5380 = fcmp ogt double %5379, 0.000000e+00
  %5381 = select i1 %5380, double %5379, double 0.000000e+00
  %5382 = fptosi double %5381 to i64
  %5383 = add nsw i64 %5377, -2
  %5384 = tail call i64 @llvm.smin.i64(i64 %5383, i64 %5382)
  %5385 = sitofp i64 %5384 to double
  %5386 = fsub double %5379, %5385
  %5387 = fsub double 1.000000e+00, %5386
  %5388 = insertelement <8 x double> poison, double %5387, i64 0
  %5389 = shufflevector <8 x double> %5388, <8 x double> poison, <8 x i32> zeroinitializer
  %5390 = load ptr, ptr %5354, align 8, !tbaa !52
  %5391 = getelementptr inbounds <8 x double>, ptr %5390, i64 %5384
  %5392 = load <8 x double>, ptr %5391, align 64, !tbaa !26
  %5393 = insertelement <8 x double> poison, double %5386, i64 0
  %5394 = shufflevector <8 x double> %5393, <8 x double> poison, <8 x i32> zeroinitializer
  %5395 = getelementptr i8, ptr %5391, i64 64
  %5396 = load <8 x double>, ptr %5395, align 64, !tbaa !26
  %5397 = fmul <8 x double> %5396, %5394
  %5398 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5389, <8 x double> %5392, <8 x double> %5397)
  %5399 = getelementptr inbounds nuw i8, ptr %5317, i64 512
  store <8 x double> %5398, ptr %5399, align 64, !tbaa !26
  %5400 = load i64, ptr %142, align 8, !tbaa !22
  %5401 = sitofp i64 %5400 to double
  %5402 = tail call double @llvm.fmuladd.f64(double %5401, double 2.500000e-01, double -5.000000e-01)
  %5403 = fcmp ogt double %5402, 0.000000e+00
  %5404 = select i1 %5403, double %5402, double 0.000000e+00
  %5405 = fptosi double %5404 to i64
  %5406 = add nsw i64 %5400, -2
  %5407 = tail call i64 @llvm.smin.i64(i64 %5406, i64 %5405)
  %5408 = sitofp i64 %5407 to double
  %5409 = fsub double %5402, %5408
  %5410 = fsub double 1.000000e+00, %5409
  %5411 = insertelement <8 x double> poison, double %5410, i64 0
  %5412 = shufflevector <8 x double> %5411, <8 x double> poison, <8 x i32> zeroinitializer
  %5413 = load ptr, ptr %5354, align 8, !tbaa !52
  %5414 = getelementptr inbounds <8 x double>, ptr %5413, i64 %5407
  %5415 = load <8 x double>, ptr %5414, align 64, !tbaa !26
  %5416 = insertelement <8 x double> poison, double %5409, i64 0
  %5417 = shufflevector <8 x double> %5416, <8 x double> poison, <8 x i32> zeroinitializer
  %5418 = getelementptr i8, ptr %5414, i64 64
  %5419 = load <8 x double>, ptr %5418, align 64, !tbaa !26
  %5420 = fmul <8 x double> %5419, %5417
  %5421 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5412, <8 x double> %5415, <8 x double> %5420)
  %5422 = getelementptr inbounds nuw i8, ptr %5317, i64 576
  store <8 x double> %5421, ptr %5422, align 64, !tbaa !26
  %5423 = getelementptr inbounds nuw i8, ptr %5317, i64 640
  %5424 = add nuw nsw i64 %5318, 1
  %5425 = load i64, ptr %178, align 8, !tbaa !20
  %5426 = icmp slt i64 %5424, %5425
  br i1 %5426, label %5316, label %5427, !llvm.loop !154

5427:                                             ; preds = %5316, %5302, %5288
  %5428 = getelementptr inbounds nuw i8, ptr %5289, i64 192
  br label %5429

5429:                                             ; preds = %5427, %5588
  %5430 = phi i64 [ 0, %5427 ], [ %5589, %5588 ]
  %5431 = getelementptr inbounds nuw i64, ptr %13, i64 %5430
  %5432 = load i64, ptr %5431, align 8, !tbaa !30
  %5433 = icmp eq i64 %5432, 0
  br i1 %5433, label %5588, label %5434

5434:                                             ; preds = %5429
  %5435 = getelementptr inbounds nuw [8 x i64], ptr %241, i64 0, i64 %5430
  %5436 = load i64, ptr %5435, align 8, !tbaa !30
  %5437 = load i64, ptr %242, align 8, !tbaa !155
  %5438 = icmp eq i64 %5436, %5437
  br i1 %5438, label %5442, label %5439

5439:                                             ; preds = %5434
  %5440 = getelementptr inbounds nuw [8 x ptr], ptr %246, i64 0, i64 %5430
  %5441 = load ptr, ptr %5440, align 8, !tbaa !156
  br label %5457

5442:                                             ; preds = %5434
  %5443 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %5430
  %5444 = load i64, ptr %5443, align 8, !tbaa !30
  %5445 = load ptr, ptr %243, align 8, !tbaa !157
  %5446 = load i64, ptr %134, align 8, !tbaa !43
  %5447 = getelementptr inbounds i64, ptr %5445, i64 %5446
  store i64 %5444, ptr %5447, align 8, !tbaa !30
  %5448 = load ptr, ptr %244, align 8, !tbaa !158
  %5449 = load i64, ptr %134, align 8, !tbaa !43
  %5450 = add nsw i64 %5449, 1
  store i64 %5450, ptr %134, align 8, !tbaa !43
  %5451 = load i64, ptr %242, align 8, !tbaa !155
  %5452 = mul nsw i64 %5451, %5449
  %5453 = load i64, ptr %245, align 8, !tbaa !15
  %5454 = mul nsw i64 %5452, %5453
  %5455 = getelementptr inbounds double, ptr %5448, i64 %5454
  %5456 = getelementptr inbounds nuw [8 x ptr], ptr %246, i64 0, i64 %5430
  store ptr %5455, ptr %5456, align 8, !tbaa !156
  br label %5457

5457:                                             ; preds = %5439, %5442
  %5458 = phi i64 [ %5436, %5439 ], [ 0, %5442 ]
  %5459 = phi ptr [ %5441, %5439 ], [ %5455, %5442 ]
  %5460 = add nsw i64 %5458, 1
  store i64 %5460, ptr %5435, align 8, !tbaa !30
  %5461 = load i64, ptr %245, align 8, !tbaa !15
  %5462 = mul nsw i64 %5461, %5458
  %5463 = getelementptr inbounds double, ptr %5459, i64 %5462
  %5464 = load ptr, ptr %238, align 64, !tbaa !39
  %5465 = icmp ult ptr %5464, %5285
  br i1 %5465, label %5531, label %5466

5466:                                             ; preds = %5531, %5457
  %5467 = phi ptr [ %5463, %5457 ], [ %5536, %5531 ]
  %5468 = load i64, ptr %150, align 64, !tbaa !16
  %5469 = icmp sgt i64 %5468, 0
  br i1 %5469, label %5470, label %5518

5470:                                             ; preds = %5466
  %5471 = trunc nuw nsw i64 %5430 to i32
  %5472 = and i64 %5468, 3
  %5473 = icmp ult i64 %5468, 4
  br i1 %5473, label %5502, label %5474

5474:                                             ; preds = %5470
  %5475 = and i64 %5468, 9223372036854775804
  br label %5476

5476:                                             ; preds = %5476, %5474
  %5477 = phi i64 [ 0, %5474 ], [ %5499, %5476 ]
  %5478 = phi ptr [ %5467, %5474 ], [ %5496, %5476 ]
  %5479 = phi i64 [ 0, %5474 ], [ %5500, %5476 ]
  %5480 = getelementptr inbounds nuw <8 x double>, ptr %5285, i64 %5477
  %5481 = getelementptr i8, ptr %5478, i64 8
  %5482 = load <8 x double>, ptr %5480, align 64, !tbaa !26
  %5483 = extractelement <8 x double> %5482, i32 %5471
  store double %5483, ptr %5478, align 8, !tbaa !44
  %5484 = or disjoint i64 %5477, 1
  %5485 = getelementptr inbounds nuw <8 x double>, ptr %5285, i64 %5484
  %5486 = getelementptr i8, ptr %5478, i64 16
  %5487 = load <8 x double>, ptr %5485, align 64, !tbaa !26
  %5488 = extractelement <8 x double> %5487, i32 %5471
  store double %5488, ptr %5481, align 8, !tbaa !44
  %5489 = or disjoint i64 %5477, 2
  %5490 = getelementptr inbounds nuw <8 x double>, ptr %5285, i64 %5489
  %5491 = getelementptr i8, ptr %5478, i64 24
  %5492 = load <8 x double>, ptr %5490, align 64, !tbaa !26
  %5493 = extractelement <8 x double> %5492, i32 %5471
  store double %5493, ptr %5486, align 8, !tbaa !44
  %5494 = or disjoint i64 %5477, 3
  %5495 = getelementptr inbounds nuw <8 x double>, ptr %5285, i64 %5494
  %5496 = getelementptr i8, ptr %5478, i64 32
  %5497 = load <8 x double>, ptr %5495, align 64, !tbaa !26
  %5498 = extractelement <8 x double> %5497, i32 %5471
  store double %5498, ptr %5491, align 8, !tbaa !44
  %5499 = add nuw nsw i64 %5477, 4
  %5500 = add i64 %5479, 4
  %5501 = icmp eq i64 %5500, %5475
  br i1 %5501, label %5502, label %5476, !llvm.loop !159

5502:                                             ; preds = %5476, %5470
  %5503 = phi ptr [ poison, %5470 ], [ %5496, %5476 ]
  %5504 = phi i64 [ 0, %5470 ], [ %5499, %5476 ]
  %5505 = phi ptr [ %5467, %5470 ], [ %5496, %5476 ]
  %5506 = icmp eq i64 %5472, 0
  br i1 %5506, label %5518, label %5507

5507:                                             ; preds = %5502, %5507
  %5508 = phi i64 [ %5515, %5507 ], [ %5504, %5502 ]
  %5509 = phi ptr [ %5512, %5507 ], [ %5505, %5502 ]
  %5510 = phi i64 [ %5516, %5507 ], [ 0, %5502 ]
  %5511 = getelementptr inbounds nuw <8 x double>, ptr %5285, i64 %5508
  %5512 = getelementptr i8, ptr %5509, i64 8
  %5513 = load <8 x double>, ptr %5511, align 64, !tbaa !26
  %5514 = extractelement <8 x double> %5513, i32 %5471
  store double %5514, ptr %5509, align 8, !tbaa !44
  %5515 = add nuw nsw i64 %5508, 1
  %5516 = add i64 %5510, 1
  %5517 = icmp eq i64 %5516, %5472
  br i1 %5517, label %5518, label %5507, !llvm.loop !160

5518:                                             ; preds = %5502, %5507, %5466
  %5519 = phi ptr [ %5467, %5466 ], [ %5503, %5502 ], [ %5512, %5507 ]
  %5520 = load i64, ptr %240, align 8, !tbaa !152
  %5521 = icmp eq i64 %5520, 0
  br i1 %5521, label %5588, label %5522

5522:                                             ; preds = %5518
  %5523 = getelementptr inbounds nuw double, ptr %5289, i64 %5430
  %5524 = load double, ptr %5523, align 8, !tbaa !44
  %5525 = getelementptr inbounds nuw i8, ptr %5519, i64 8
  store double %5524, ptr %5519, align 8, !tbaa !44
  %5526 = getelementptr inbounds nuw i8, ptr %5523, i64 64
  %5527 = load double, ptr %5526, align 8, !tbaa !44
  %5528 = getelementptr inbounds nuw i8, ptr %5519, i64 16
  store double %5527, ptr %5525, align 8, !tbaa !44
  %5529 = getelementptr inbounds nuw i8, ptr %5523, i64 128
  %5530 = load double, ptr %5529, align 8, !tbaa !44
  store double %5530, ptr %5528, align 8, !tbaa !44
  br i1 %5469, label %5539, label %5588

5531:                                             ; preds = %5457, %5531
  %5532 = phi ptr [ %5537, %5531 ], [ %5464, %5457 ]
  %5533 = phi ptr [ %5536, %5531 ], [ %5463, %5457 ]
  %5534 = getelementptr inbounds nuw double, ptr %5532, i64 %5430
  %5535 = load double, ptr %5534, align 8, !tbaa !44
  %5536 = getelementptr inbounds nuw i8, ptr %5533, i64 8
  store double %5535, ptr %5533, align 8, !tbaa !44
  %5537 = getelementptr inbounds nuw i8, ptr %5532, i64 64
  %5538 = icmp ult ptr %5537, %5285
  br i1 %5538, label %5531, label %5466, !llvm.loop !162

5539:                                             ; preds = %5522
  %5540 = getelementptr inbounds nuw i8, ptr %5519, i64 24
  %5541 = trunc nuw nsw i64 %5430 to i32
  br label %5542

5542:                                             ; preds = %5539, %5542
  %5543 = phi i64 [ %5586, %5542 ], [ 0, %5539 ]
  %5544 = phi ptr [ %5585, %5542 ], [ %5540, %5539 ]
  %5545 = mul nuw nsw i64 %5543, 640
  %5546 = getelementptr inbounds nuw i8, ptr %5428, i64 %5545
  %5547 = load <8 x double>, ptr %5546, align 64, !tbaa !26
  %5548 = extractelement <8 x double> %5547, i32 %5541
  %5549 = getelementptr inbounds nuw i8, ptr %5544, i64 8
  store double %5548, ptr %5544, align 8, !tbaa !44
  %5550 = getelementptr inbounds nuw i8, ptr %5546, i64 64
  %5551 = load <8 x double>, ptr %5550, align 64, !tbaa !26
  %5552 = extractelement <8 x double> %5551, i32 %5541
  %5553 = getelementptr inbounds nuw i8, ptr %5544, i64 16
  store double %5552, ptr %5549, align 8, !tbaa !44
  %5554 = getelementptr inbounds nuw i8, ptr %5546, i64 128
  %5555 = load <8 x double>, ptr %5554, align 64, !tbaa !26
  %5556 = extractelement <8 x double> %5555, i32 %5541
  %5557 = getelementptr inbounds nuw i8, ptr %5544, i64 24
  store double %5556, ptr %5553, align 8, !tbaa !44
  %5558 = getelementptr inbounds nuw i8, ptr %5546, i64 192
  %5559 = load <8 x double>, ptr %5558, align 64, !tbaa !26
  %5560 = extractelement <8 x double> %5559, i32 %5541
  %5561 = getelementptr inbounds nuw i8, ptr %5544, i64 32
  store double %5560, ptr %5557, align 8, !tbaa !44
  %5562 = getelementptr inbounds nuw i8, ptr %5546, i64 256
  %5563 = load <8 x double>, ptr %5562, align 64, !tbaa !26
  %5564 = extractelement <8 x double> %5563, i32 %5541
  %5565 = getelementptr inbounds nuw i8, ptr %5544, i64 40
  store double %5564, ptr %5561, align 8, !tbaa !44
  %5566 = getelementptr inbounds nuw i8, ptr %5546, i64 320
  %5567 = load <8 x double>, ptr %5566, align 64, !tbaa !26
  %5568 = extractelement <8 x double> %5567, i32 %5541
  %5569 = getelementptr inbounds nuw i8, ptr %5544, i64 48
  store double %5568, ptr %5565, align 8, !tbaa !44
  %5570 = getelementptr inbounds nuw i8, ptr %5546, i64 384
  %5571 = load <8 x double>, ptr %5570, align 64, !tbaa !26
  %5572 = extractelement <8 x double> %5571, i32 %5541
  %5573 = getelementptr inbounds nuw i8, ptr %5544, i64 56
  store double %5572, ptr %5569, align 8, !tbaa !44
  %5574 = getelementptr inbounds nuw i8, ptr %5546, i64 448
  %5575 = load <8 x double>, ptr %5574, align 64, !tbaa !26
  %5576 = extractelement <8 x double> %5575, i32 %5541
  %5577 = getelementptr inbounds nuw i8, ptr %5544, i64 64
  store double %5576, ptr %5573, align 8, !tbaa !44
  %5578 = getelementptr inbounds nuw i8, ptr %5546, i64 512
  %5579 = load <8 x double>, ptr %5578, align 64, !tbaa !26
  %5580 = extractelement <8 x double> %5579, i32 %5541
  %5581 = getelementptr inbounds nuw i8, ptr %5544, i64 72
  store double %5580, ptr %5577, align 8, !tbaa !44
  %5582 = getelementptr inbounds nuw i8, ptr %5546, i64 576
  %5583 = load <8 x double>, ptr %5582, align 64, !tbaa !26
  %5584 = extractelement <8 x double> %5583, i32 %5541
  %5585 = getelementptr inbounds nuw i8, ptr %5544, i64 80
  store double %5584, ptr %5581, align 8, !tbaa !44
  %5586 = add nuw nsw i64 %5543, 1
  %5587 = icmp eq i64 %5586, %5468
  br i1 %5587, label %5588, label %5542, !llvm.loop !159

5588:                                             ; preds = %5542, %5522, %5518, %5429
  %5589 = add nuw nsw i64 %5430, 1
  %5590 = icmp eq i64 %5589, 8
  br i1 %5590, label %5591, label %5429, !llvm.loop !163

5591:                                             ; preds = %5588
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %5592 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %5593 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %5594 = fsub <8 x double> %5592, %5593
  %5595 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %5596 = fadd <8 x double> %5595, splat (double -1.000000e-09)
  %5597 = fcmp oge <8 x double> %5594, %5596
  %5598 = select <8 x i1> %5597, <8 x i64> %4284, <8 x i64> zeroinitializer
  %5599 = load i64, ptr %178, align 8, !tbaa !20
  %5600 = icmp sgt i64 %5599, 0
  br i1 %5600, label %5601, label %5633

5601:                                             ; preds = %5591
  %5602 = load ptr, ptr %151, align 8, !tbaa !28
  %5603 = and i64 %5599, 1
  %5604 = icmp eq i64 %5599, 1
  br i1 %5604, label %5623, label %5605

5605:                                             ; preds = %5601
  %5606 = and i64 %5599, 9223372036854775806
  br label %5607

5607:                                             ; preds = %5607, %5605
  %5608 = phi i64 [ 0, %5605 ], [ %5620, %5607 ]
  %5609 = phi <8 x double> [ splat (double 1.000000e+09), %5605 ], [ %5619, %5607 ]
  %5610 = phi i64 [ 0, %5605 ], [ %5621, %5607 ]
  %5611 = getelementptr inbounds nuw %struct.Piece, ptr %5602, i64 %5608, i32 35
  %5612 = load <8 x double>, ptr %5611, align 64, !tbaa !26
  %5613 = fcmp olt <8 x double> %5609, %5612
  %5614 = select <8 x i1> %5613, <8 x double> %5609, <8 x double> %5612
  %5615 = or disjoint i64 %5608, 1
  %5616 = getelementptr inbounds nuw %struct.Piece, ptr %5602, i64 %5615, i32 35
  %5617 = load <8 x double>, ptr %5616, align 64, !tbaa !26
  %5618 = fcmp olt <8 x double> %5614, %5617
  %5619 = select <8 x i1> %5618, <8 x double> %5614, <8 x double> %5617
  %5620 = add nuw nsw i64 %5608, 2
  %5621 = add i64 %5610, 2
  %5622 = icmp eq i64 %5621, %5606
  br i1 %5622, label %5623, label %5607, !llvm.loop !138

5623:                                             ; preds = %5607, %5601
  %5624 = phi <8 x double> [ poison, %5601 ], [ %5619, %5607 ]
  %5625 = phi i64 [ 0, %5601 ], [ %5620, %5607 ]
  %5626 = phi <8 x double> [ splat (double 1.000000e+09), %5601 ], [ %5619, %5607 ]
  %5627 = icmp eq i64 %5603, 0
  br i1 %5627, label %5633, label %5628

5628:                                             ; preds = %5623
  %5629 = getelementptr inbounds nuw %struct.Piece, ptr %5602, i64 %5625, i32 35
  %5630 = load <8 x double>, ptr %5629, align 64, !tbaa !26
  %5631 = fcmp olt <8 x double> %5626, %5630
  %5632 = select <8 x i1> %5631, <8 x double> %5626, <8 x double> %5630
  br label %5633

5633:                                             ; preds = %5628, %5623, %5591
  %5634 = phi <8 x double> [ splat (double 1.000000e+09), %5591 ], [ %5624, %5623 ], [ %5632, %5628 ]
  %5635 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %5636 = select <8 x i1> %4344, <8 x double> %5635, <8 x double> %5634
  store <8 x double> %5636, ptr %234, align 64, !tbaa !26
  %5637 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %5638 = fcmp une <8 x double> %5637, zeroinitializer
  %5639 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %5640 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %5641 = fsub <8 x double> %5639, %5640
  %5642 = fcmp une <8 x double> %5637, splat (double 1.000000e+00)
  %5643 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %5644 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %5645 = fsub <8 x double> %5643, %5644
  %5646 = select <8 x i1> %5642, <8 x double> splat (double -1.000000e+00), <8 x double> %5645
  %5647 = fcmp une <8 x double> %5637, splat (double 2.000000e+00)
  %5648 = fsub <8 x double> %5636, %5644
  %5649 = select <8 x i1> %5647, <8 x double> %5646, <8 x double> %5648
  %5650 = fcmp une <8 x double> %5637, splat (double 3.000000e+00)
  %5651 = fsub <8 x double> %5641, %5644
  %5652 = select <8 x i1> %5650, <8 x double> %5649, <8 x double> %5651
  %5653 = fcmp une <8 x double> %5637, splat (double 4.000000e+00)
  %5654 = fsub <8 x double> %5644, %5641
  %5655 = select <8 x i1> %5653, <8 x double> %5652, <8 x double> %5654
  %5656 = fcmp oge <8 x double> %5655, splat (double 0xBEB0C6F7A0B5ED8D)
  %5657 = select <8 x i1> %5656, <8 x i1> %5638, <8 x i1> zeroinitializer
  %5658 = select <8 x i1> %5657, <8 x i64> %4284, <8 x i64> zeroinitializer
  %5659 = xor <8 x i64> %5658, splat (i64 -1)
  %5660 = and <8 x i64> %5598, %5659
  %5661 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %5662 = icmp ne <8 x i64> %5660, zeroinitializer
  %5663 = select <8 x i1> %5638, <8 x i1> %5662, <8 x i1> zeroinitializer
  %5664 = select <8 x i1> %5663, <8 x double> splat (double 2.000000e+00), <8 x double> %5661
  store <8 x double> %5664, ptr %148, align 64, !tbaa !26
  %5665 = or <8 x i64> %5658, %5598
  %5666 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %5667 = fadd <8 x double> %5666, splat (double 1.000000e+00)
  %5668 = icmp eq <8 x i64> %5665, zeroinitializer
  %5669 = select <8 x i1> %5668, <8 x double> %5666, <8 x double> %5667
  store <8 x double> %5669, ptr %239, align 64, !tbaa !26
  %5670 = xor <8 x i64> %5665, %4284
  %5671 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %5672 = fcmp oeq <8 x double> %5671, zeroinitializer
  %5673 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %5674 = fcmp oeq <8 x double> %5673, zeroinitializer
  %5675 = select <8 x i1> %5674, <8 x i1> %5672, <8 x i1> zeroinitializer
  %5676 = select <8 x i1> %5675, <8 x i64> %5670, <8 x i64> zeroinitializer
  %5677 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %5678 = fmul <8 x double> %5677, splat (double 5.000000e-01)
  %5679 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %5680 = fadd <8 x double> %5679, %5678
  %5681 = fadd <8 x double> %5680, splat (double -4.000000e-03)
  %5682 = fcmp ult <8 x double> %5643, %5681
  %5683 = fsub <8 x double> %5679, %5678
  %5684 = fadd <8 x double> %5683, splat (double 4.000000e-03)
  %5685 = fcmp ole <8 x double> %5643, %5684
  %5686 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %5687 = select <8 x i1> %5685, <8 x i64> splat (i64 -1), <8 x i64> %5686
  %5688 = select <8 x i1> %5682, <8 x i64> %5687, <8 x i64> zeroinitializer
  %5689 = xor <8 x i64> %5688, %5686
  %5690 = and <8 x i64> %5689, %5676
  %5691 = and <8 x i64> %5688, %5676
  %5692 = xor <8 x i64> %5676, splat (i64 -1)
  %5693 = and <8 x i64> %5686, %5692
  %5694 = or <8 x i64> %5691, %5693
  store <8 x i64> %5694, ptr %165, align 64, !tbaa !26
  %5695 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %5696 = or <8 x i64> %5690, %5695
  store <8 x i64> %5696, ptr %175, align 64, !tbaa !26
  %5697 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5665)
  %5698 = icmp eq i64 %5697, 0
  br i1 %5698, label %5733, label %5699

5699:                                             ; preds = %5633
  %5700 = extractelement <8 x i64> %5665, i64 0
  %5701 = icmp eq i64 %5700, 0
  br i1 %5701, label %5703, label %5702

5702:                                             ; preds = %5699
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %5703

5703:                                             ; preds = %5702, %5699
  %5704 = extractelement <8 x i64> %5665, i64 1
  %5705 = icmp eq i64 %5704, 0
  br i1 %5705, label %5707, label %5706

5706:                                             ; preds = %5703
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %5707

5707:                                             ; preds = %5706, %5703
  %5708 = extractelement <8 x i64> %5665, i64 2
  %5709 = icmp eq i64 %5708, 0
  br i1 %5709, label %5711, label %5710

5710:                                             ; preds = %5707
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %5711

5711:                                             ; preds = %5710, %5707
  %5712 = extractelement <8 x i64> %5665, i64 3
  %5713 = icmp eq i64 %5712, 0
  br i1 %5713, label %5715, label %5714

5714:                                             ; preds = %5711
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %5715

5715:                                             ; preds = %5714, %5711
  %5716 = extractelement <8 x i64> %5665, i64 4
  %5717 = icmp eq i64 %5716, 0
  br i1 %5717, label %5719, label %5718

5718:                                             ; preds = %5715
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %5719

5719:                                             ; preds = %5718, %5715
  %5720 = extractelement <8 x i64> %5665, i64 5
  %5721 = icmp eq i64 %5720, 0
  br i1 %5721, label %5723, label %5722

5722:                                             ; preds = %5719
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %5723

5723:                                             ; preds = %5722, %5719
  %5724 = extractelement <8 x i64> %5665, i64 6
  %5725 = icmp eq i64 %5724, 0
  br i1 %5725, label %5727, label %5726

5726:                                             ; preds = %5723
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %5727

5727:                                             ; preds = %5726, %5723
  %5728 = extractelement <8 x i64> %5665, i64 7
  %5729 = icmp eq i64 %5728, 0
  br i1 %5729, label %5731, label %5730

5730:                                             ; preds = %5727
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %5731

5731:                                             ; preds = %5730, %5727
  %5732 = load <8 x double>, ptr %148, align 64, !tbaa !26
  br label %5733

5733:                                             ; preds = %5731, %5633
  %5734 = phi <8 x double> [ %5732, %5731 ], [ %5664, %5633 ]
  %5735 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %5736 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %5737 = fadd <8 x double> %5736, splat (double -1.000000e+00)
  %5738 = fcmp oge <8 x double> %5735, %5737
  %5739 = select <8 x i1> %5738, <8 x i64> %4284, <8 x i64> zeroinitializer
  %5740 = icmp eq <8 x i64> %5739, zeroinitializer
  %5741 = select <8 x i1> %5740, <8 x double> %5734, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5741, ptr %148, align 64, !tbaa !26
  %5742 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5739)
  %5743 = icmp eq i64 %5742, 0
  br i1 %5743, label %549, label %5744

5744:                                             ; preds = %5733
  %5745 = extractelement <8 x i64> %5739, i64 0
  %5746 = icmp eq i64 %5745, 0
  br i1 %5746, label %5748, label %5747

5747:                                             ; preds = %5744
  store double 1.000000e+00, ptr %140, align 8, !tbaa !44
  br label %5748

5748:                                             ; preds = %5747, %5744
  %5749 = extractelement <8 x i64> %5739, i64 1
  %5750 = icmp eq i64 %5749, 0
  br i1 %5750, label %5752, label %5751

5751:                                             ; preds = %5748
  store double 1.000000e+00, ptr %277, align 8, !tbaa !44
  br label %5752

5752:                                             ; preds = %5751, %5748
  %5753 = extractelement <8 x i64> %5739, i64 2
  %5754 = icmp eq i64 %5753, 0
  br i1 %5754, label %5756, label %5755

5755:                                             ; preds = %5752
  store double 1.000000e+00, ptr %278, align 8, !tbaa !44
  br label %5756

5756:                                             ; preds = %5755, %5752
  %5757 = extractelement <8 x i64> %5739, i64 3
  %5758 = icmp eq i64 %5757, 0
  br i1 %5758, label %5760, label %5759

5759:                                             ; preds = %5756
  store double 1.000000e+00, ptr %279, align 8, !tbaa !44
  br label %5760

5760:                                             ; preds = %5759, %5756
  %5761 = extractelement <8 x i64> %5739, i64 4
  %5762 = icmp eq i64 %5761, 0
  br i1 %5762, label %5764, label %5763

5763:                                             ; preds = %5760
  store double 1.000000e+00, ptr %280, align 8, !tbaa !44
  br label %5764

5764:                                             ; preds = %5763, %5760
  %5765 = extractelement <8 x i64> %5739, i64 5
  %5766 = icmp eq i64 %5765, 0
  br i1 %5766, label %5768, label %5767

5767:                                             ; preds = %5764
  store double 1.000000e+00, ptr %281, align 8, !tbaa !44
  br label %5768

5768:                                             ; preds = %5767, %5764
  %5769 = extractelement <8 x i64> %5739, i64 6
  %5770 = icmp eq i64 %5769, 0
  br i1 %5770, label %5772, label %5771

5771:                                             ; preds = %5768
  store double 1.000000e+00, ptr %282, align 8, !tbaa !44
  br label %5772

5772:                                             ; preds = %5771, %5768
  %5773 = extractelement <8 x i64> %5739, i64 7
  %5774 = icmp eq i64 %5773, 0
  br i1 %5774, label %549, label %5775

5775:                                             ; preds = %5772
  store double 1.000000e+00, ptr %283, align 8, !tbaa !44
  br label %549

5776:                                             ; preds = %549, %554, %131
  %5777 = phi i64 [ 0, %131 ], [ 1, %554 ], [ 0, %549 ]
  ret i64 %5777
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
  %33 = load i64, ptr %32, align 8, !tbaa !152
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
  br i1 %44, label %35, label %30, !llvm.loop !153

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
  br i1 %175, label %65, label %176, !llvm.loop !154

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
  %198 = load i64, ptr %178, align 8, !tbaa !155
  %199 = icmp eq i64 %197, %198
  br i1 %199, label %203, label %200

200:                                              ; preds = %195
  %201 = getelementptr inbounds nuw [8 x ptr], ptr %185, i64 0, i64 %191
  %202 = load ptr, ptr %201, align 8, !tbaa !156
  br label %217

203:                                              ; preds = %195
  %204 = getelementptr inbounds nuw [8 x i64], ptr %179, i64 0, i64 %191
  %205 = load i64, ptr %204, align 8, !tbaa !30
  %206 = load i64, ptr %182, align 8, !tbaa !43
  %207 = getelementptr inbounds i64, ptr %181, i64 %206
  store i64 %205, ptr %207, align 8, !tbaa !30
  %208 = load ptr, ptr %183, align 8, !tbaa !158
  %209 = load i64, ptr %182, align 8, !tbaa !43
  %210 = add nsw i64 %209, 1
  store i64 %210, ptr %182, align 8, !tbaa !43
  %211 = load i64, ptr %178, align 8, !tbaa !155
  %212 = mul nsw i64 %211, %209
  %213 = load i64, ptr %184, align 8, !tbaa !15
  %214 = mul nsw i64 %212, %213
  %215 = getelementptr inbounds double, ptr %208, i64 %214
  %216 = getelementptr inbounds nuw [8 x ptr], ptr %185, i64 0, i64 %191
  store ptr %215, ptr %216, align 8, !tbaa !156
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
  br i1 %259, label %260, label %234, !llvm.loop !159

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
  br i1 %275, label %276, label %265, !llvm.loop !164

276:                                              ; preds = %260, %265, %224
  %277 = phi ptr [ %225, %224 ], [ %261, %260 ], [ %270, %265 ]
  %278 = load i64, ptr %32, align 8, !tbaa !152
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
  br i1 %296, label %289, label %224, !llvm.loop !162

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
  br i1 %345, label %346, label %300, !llvm.loop !159

346:                                              ; preds = %300, %280, %276, %190
  %347 = add nuw nsw i64 %191, 1
  %348 = icmp eq i64 %347, 8
  br i1 %348, label %349, label %190, !llvm.loop !163

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
  %9 = load i64, ptr %8, align 8, !tbaa !155
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
  %22 = load ptr, ptr %21, align 8, !tbaa !165
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
  %37 = load ptr, ptr %36, align 8, !tbaa !166
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !167
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !168
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
  br i1 %60, label %26, label %42, !llvm.loop !169

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
  %196 = load ptr, ptr %195, align 16, !tbaa !140
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
  br i1 %212, label %173, label %202, !llvm.loop !170

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
  br i1 %265, label %213, label %241, !llvm.loop !171

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
  br i1 %277, label %278, label %269, !llvm.loop !172

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
  br i1 %307, label %266, label %287, !llvm.loop !173

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
  br i1 %465, label %444, label %308, !llvm.loop !174

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
  br i1 %503, label %482, label %495, !llvm.loop !175

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
  br i1 %549, label %504, label %529, !llvm.loop !176

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
  br i1 %559, label %160, label %61, !llvm.loop !177

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
  br i1 %570, label %550, label %560, !llvm.loop !178
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !179
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !180
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
  %22 = load ptr, ptr %21, align 8, !tbaa !181
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
  br i1 %68, label %69, label %36, !llvm.loop !182

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
  br i1 %138, label %139, label %117, !llvm.loop !183

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
  br i1 %241, label %235, label %242, !llvm.loop !184

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
!140 = !{!32, !11, i64 8624}
!141 = distinct !{!141, !38}
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
!152 = !{!5, !6, i64 40}
!153 = distinct !{!153, !38}
!154 = distinct !{!154, !38}
!155 = !{!5, !6, i64 56}
!156 = !{!10, !10, i64 0}
!157 = !{!5, !12, i64 168}
!158 = !{!5, !10, i64 160}
!159 = distinct !{!159, !38}
!160 = distinct !{!160, !161}
!161 = !{!"llvm.loop.unroll.disable"}
!162 = distinct !{!162, !38}
!163 = distinct !{!163, !38}
!164 = distinct !{!164, !161}
!165 = !{!5, !10, i64 80}
!166 = !{!5, !10, i64 72}
!167 = !{!5, !10, i64 96}
!168 = !{!5, !12, i64 104}
!169 = distinct !{!169, !38}
!170 = distinct !{!170, !38}
!171 = distinct !{!171, !38}
!172 = distinct !{!172, !161}
!173 = distinct !{!173, !38}
!174 = distinct !{!174, !38}
!175 = distinct !{!175, !38}
!176 = distinct !{!176, !38}
!177 = distinct !{!177, !38}
!178 = distinct !{!178, !38}
!179 = !{!5, !10, i64 88}
!180 = !{!5, !12, i64 112}
!181 = !{!5, !12, i64 120}
!182 = distinct !{!182, !38}
!183 = distinct !{!183, !38}
!184 = distinct !{!184, !38}
