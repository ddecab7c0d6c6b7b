; Made by scripts/lanes.py from sources of sha256 7f08506d2f446d8fee84825fa67b816dadaff9e8f691f7d93f32887320d047dd.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <8 x double>], [14 x <8 x double>], [14 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, %struct.Flash, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, [8 x ptr], ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
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
  %12 = add i64 %11, 10816
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
  %51 = getelementptr inbounds nuw i8, ptr %46, i64 8584
  %52 = getelementptr inbounds nuw i8, ptr %46, i64 8592
  %53 = getelementptr inbounds nuw i8, ptr %46, i64 8600
  %54 = getelementptr inbounds nuw i8, ptr %46, i64 8608
  %55 = getelementptr inbounds nuw i8, ptr %46, i64 8616
  %56 = getelementptr inbounds nuw i8, ptr %46, i64 8624
  %57 = getelementptr inbounds nuw i8, ptr %46, i64 8632
  %58 = getelementptr inbounds nuw i8, ptr %46, i64 8640
  %59 = getelementptr inbounds nuw i8, ptr %46, i64 8648
  %60 = getelementptr inbounds nuw i8, ptr %46, i64 8656
  %61 = getelementptr inbounds nuw i8, ptr %46, i64 8664
  %62 = getelementptr inbounds nuw i8, ptr %46, i64 8672
  %63 = getelementptr inbounds nuw i8, ptr %46, i64 8680
  %64 = getelementptr inbounds nuw i8, ptr %46, i64 8688
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
  %79 = getelementptr inbounds nuw i8, ptr %46, i64 8696
  store ptr %78, ptr %79, align 8, !tbaa !36
  %80 = icmp eq i64 %49, 0
  %81 = select i1 %80, i64 0, i64 2
  %82 = shl i64 %41, %81
  %83 = getelementptr inbounds <8 x double>, ptr %78, i64 %82
  %84 = getelementptr inbounds nuw i8, ptr %46, i64 8704
  %85 = getelementptr inbounds nuw i8, ptr %46, i64 8712
  %86 = getelementptr inbounds nuw i8, ptr %46, i64 8720
  %87 = getelementptr inbounds nuw i8, ptr %46, i64 8728
  %88 = getelementptr inbounds nuw i8, ptr %46, i64 8736
  %89 = getelementptr inbounds nuw i8, ptr %46, i64 8744
  %90 = getelementptr inbounds nuw i8, ptr %46, i64 8752
  %91 = getelementptr inbounds nuw i8, ptr %46, i64 8760
  %92 = getelementptr inbounds nuw i8, ptr %46, i64 8768
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
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %123) #6
  br label %128

125:                                              ; preds = %118
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %123, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %123) #6
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
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %135 = load i64, ptr %133, align 8, !tbaa !42
  %136 = load i64, ptr %134, align 8, !tbaa !43
  %137 = sub nsw i64 %135, %136
  %138 = icmp slt i64 %137, 16
  br i1 %138, label %5899, label %139

139:                                              ; preds = %131
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 2384
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 2392
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %144 = getelementptr inbounds nuw i8, ptr %0, i64 216
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %150 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 6216
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %154 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 2408
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 2376
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %192 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %194 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %195 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 2400
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 6208
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %243 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %244 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 168
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

285:                                              ; preds = %549, %139
  %286 = phi i64 [ 0, %139 ], [ %550, %549 ]
  %287 = phi i1 [ true, %139 ], [ %551, %549 ]
  %288 = getelementptr inbounds nuw i64, ptr %132, i64 %286
  %289 = load i64, ptr %288, align 8, !tbaa !30
  %290 = icmp eq i64 %289, 0
  br i1 %290, label %545, label %291

291:                                              ; preds = %285
  %292 = getelementptr inbounds nuw [8 x double], ptr %140, i64 0, i64 %286
  %293 = load double, ptr %292, align 8, !tbaa !44
  %294 = fcmp oeq double %293, 0.000000e+00
  br i1 %294, label %545, label %295

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
  %317 = load i64, ptr %150, align 8, !tbaa !46
  %318 = icmp eq i64 %317, 0
  br i1 %318, label %529, label %319

319:                                              ; preds = %295
  %320 = load i64, ptr %151, align 64, !tbaa !16
  %321 = icmp sgt i64 %320, 0
  br i1 %321, label %322, label %529

322:                                              ; preds = %319
  %323 = load ptr, ptr %152, align 8, !tbaa !28
  %324 = load ptr, ptr %153, align 8, !tbaa !47
  %325 = mul nsw i64 %320, %299
  %326 = mul i64 %296, 3
  %327 = load ptr, ptr %154, align 8, !tbaa !48
  %328 = icmp sgt i64 %296, 0
  %329 = getelementptr inbounds nuw double, ptr %10, i64 %286
  %330 = shl i64 %296, 4
  %331 = getelementptr inbounds nuw double, ptr %11, i64 %286
  %332 = icmp sgt i64 %297, 0
  %333 = and i64 %297, 1
  %334 = icmp eq i64 %297, 1
  %335 = and i64 %297, 9223372036854775806
  %336 = icmp eq i64 %333, 0
  br label %337

337:                                              ; preds = %437, %322
  %338 = phi i64 [ 0, %322 ], [ %504, %437 ]
  %339 = getelementptr inbounds nuw %struct.Piece, ptr %323, i64 %338
  %340 = getelementptr inbounds nuw i8, ptr %339, i64 1536
  %341 = getelementptr inbounds nuw double, ptr %340, i64 %286
  %342 = load double, ptr %341, align 8, !tbaa !44
  %343 = getelementptr inbounds nuw i8, ptr %339, i64 4608
  %344 = getelementptr inbounds nuw double, ptr %343, i64 %286
  %345 = load double, ptr %344, align 8, !tbaa !44
  %346 = add nsw i64 %338, %325
  %347 = mul i64 %326, %346
  %348 = getelementptr inbounds double, ptr %324, i64 %347
  %349 = mul nsw i64 %346, 40
  %350 = getelementptr inbounds i8, ptr %327, i64 %349
  br i1 %328, label %351, label %368

351:                                              ; preds = %337
  %352 = getelementptr inbounds nuw i8, ptr %339, i64 8592
  %353 = load ptr, ptr %352, align 16, !tbaa !49
  %354 = getelementptr inbounds nuw i8, ptr %339, i64 8624
  %355 = load ptr, ptr %354, align 16, !tbaa !50
  %356 = getelementptr double, ptr %355, i64 %286
  %357 = getelementptr double, ptr %348, i64 %296
  %358 = getelementptr inbounds nuw i8, ptr %339, i64 8680
  %359 = load ptr, ptr %358, align 8, !tbaa !51
  %360 = getelementptr inbounds nuw i8, ptr %339, i64 8512
  %361 = load i64, ptr %360, align 64, !tbaa !31
  %362 = getelementptr inbounds nuw i8, ptr %339, i64 4672
  %363 = getelementptr inbounds nuw i8, ptr %339, i64 384
  %364 = getelementptr inbounds nuw i8, ptr %339, i64 448
  %365 = getelementptr inbounds nuw i8, ptr %339, i64 512
  %366 = getelementptr inbounds nuw i8, ptr %339, i64 640
  %367 = getelementptr i8, ptr %348, i64 %330
  br label %381

368:                                              ; preds = %412, %337
  %369 = phi double [ %345, %337 ], [ %420, %412 ]
  br i1 %332, label %370, label %437

370:                                              ; preds = %368
  %371 = getelementptr inbounds nuw i8, ptr %339, i64 8760
  %372 = load ptr, ptr %371, align 8, !tbaa !52
  %373 = getelementptr double, ptr %372, i64 %286
  %374 = getelementptr inbounds nuw i8, ptr %339, i64 768
  %375 = getelementptr inbounds nuw double, ptr %374, i64 %286
  %376 = load double, ptr %375, align 8, !tbaa !44
  %377 = getelementptr inbounds nuw i8, ptr %339, i64 8712
  %378 = load ptr, ptr %377, align 8, !tbaa !53
  %379 = getelementptr double, ptr %378, i64 %286
  %380 = load double, ptr %373, align 8, !tbaa !44
  br i1 %334, label %423, label %506

381:                                              ; preds = %412, %351
  %382 = phi double [ %345, %351 ], [ %420, %412 ]
  %383 = phi i64 [ 0, %351 ], [ %421, %412 ]
  %384 = getelementptr inbounds nuw <8 x double>, ptr %353, i64 %383
  %385 = getelementptr inbounds nuw double, ptr %384, i64 %286
  %386 = load double, ptr %385, align 8, !tbaa !44
  %387 = getelementptr inbounds nuw double, ptr %348, i64 %383
  store double %386, ptr %387, align 8, !tbaa !44
  %388 = getelementptr <8 x double>, ptr %356, i64 %383
  %389 = load double, ptr %388, align 8, !tbaa !44
  %390 = getelementptr double, ptr %357, i64 %383
  store double %389, ptr %390, align 8, !tbaa !44
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %391 = getelementptr inbounds nuw <8 x double>, ptr %359, i64 %383
  %392 = load <8 x double>, ptr %391, align 64, !tbaa !26
  %393 = icmp slt i64 %383, %361
  br i1 %393, label %394, label %399

394:                                              ; preds = %381
  %395 = load <8 x double>, ptr %340, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %396 = load <8 x double>, ptr %384, align 64, !tbaa !26
  %397 = load <8 x double>, ptr %366, align 64, !tbaa !26
  %398 = fmul <8 x double> %396, %397
  br label %412

399:                                              ; preds = %381
  %400 = load <8 x double>, ptr %362, align 64, !tbaa !26
  %401 = load <8 x double>, ptr %340, align 64, !tbaa !26
  %402 = fsub <8 x double> %400, %401
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %403 = load <8 x double>, ptr %384, align 64, !tbaa !26
  %404 = load <8 x double>, ptr %363, align 64, !tbaa !26
  %405 = load <8 x double>, ptr %364, align 64, !tbaa !26
  %406 = load <8 x double>, ptr %365, align 64, !tbaa !26
  %407 = fmul <8 x double> %403, %406
  %408 = fmul <8 x double> %407, splat (double 0x3FD5555555555555)
  %409 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %405, <8 x double> splat (double 5.000000e-01), <8 x double> %408)
  %410 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %403, <8 x double> %409, <8 x double> %404)
  %411 = fmul <8 x double> %403, %410
  br label %412

412:                                              ; preds = %399, %394
  %413 = phi <8 x double> [ %395, %394 ], [ %402, %399 ]
  %414 = phi <8 x double> [ %398, %394 ], [ %411, %399 ]
  %415 = fmul <8 x double> %392, %413
  store <8 x double> %415, ptr %10, align 64, !tbaa !26
  %416 = fmul <8 x double> %415, %414
  store <8 x double> %416, ptr %11, align 64, !tbaa !26
  %417 = load double, ptr %329, align 8, !tbaa !44
  %418 = getelementptr double, ptr %367, i64 %383
  store double %417, ptr %418, align 8, !tbaa !44
  %419 = load double, ptr %331, align 8, !tbaa !44
  %420 = fadd double %382, %419
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %421 = add nuw nsw i64 %383, 1
  %422 = icmp eq i64 %421, %296
  br i1 %422, label %368, label %381, !llvm.loop !54

423:                                              ; preds = %506, %370
  %424 = phi double [ poison, %370 ], [ %526, %506 ]
  %425 = phi double [ %380, %370 ], [ %521, %506 ]
  %426 = phi double [ %369, %370 ], [ %526, %506 ]
  %427 = phi i64 [ 0, %370 ], [ %519, %506 ]
  br i1 %336, label %437, label %428

428:                                              ; preds = %423
  %429 = getelementptr <8 x double>, ptr %373, i64 %427
  %430 = getelementptr i8, ptr %429, i64 64
  %431 = load double, ptr %430, align 8, !tbaa !44
  %432 = fsub double %431, %425
  %433 = fmul double %376, %432
  %434 = getelementptr <8 x double>, ptr %379, i64 %427
  %435 = load double, ptr %434, align 8, !tbaa !44
  %436 = tail call double @llvm.fmuladd.f64(double %433, double %435, double %426)
  br label %437

437:                                              ; preds = %428, %423, %368
  %438 = phi double [ %369, %368 ], [ %424, %423 ], [ %436, %428 ]
  %439 = getelementptr inbounds nuw i8, ptr %339, i64 960
  %440 = getelementptr inbounds nuw double, ptr %439, i64 %286
  %441 = load double, ptr %440, align 8, !tbaa !44
  %442 = getelementptr inbounds nuw i8, ptr %339, i64 384
  %443 = getelementptr inbounds nuw double, ptr %442, i64 %286
  %444 = load double, ptr %443, align 8, !tbaa !44
  %445 = getelementptr inbounds nuw i8, ptr %339, i64 448
  %446 = getelementptr inbounds nuw double, ptr %445, i64 %286
  %447 = load double, ptr %446, align 8, !tbaa !44
  %448 = getelementptr inbounds nuw i8, ptr %339, i64 512
  %449 = getelementptr inbounds nuw double, ptr %448, i64 %286
  %450 = load double, ptr %449, align 8, !tbaa !44
  %451 = fmul double %441, %450
  %452 = fdiv double %451, 3.000000e+00
  %453 = tail call double @llvm.fmuladd.f64(double %447, double 5.000000e-01, double %452)
  %454 = tail call double @llvm.fmuladd.f64(double %441, double %453, double %444)
  %455 = fmul double %441, %454
  %456 = getelementptr inbounds nuw i8, ptr %339, i64 1408
  %457 = getelementptr inbounds nuw double, ptr %456, i64 %286
  %458 = load double, ptr %457, align 8, !tbaa !44
  %459 = fsub double %458, %342
  %460 = getelementptr inbounds nuw i8, ptr %339, i64 640
  %461 = getelementptr inbounds nuw double, ptr %460, i64 %286
  %462 = load double, ptr %461, align 8, !tbaa !44
  %463 = fmul double %342, %462
  %464 = fmul double %441, %463
  %465 = tail call double @llvm.fmuladd.f64(double %459, double %455, double %464)
  %466 = getelementptr inbounds nuw i8, ptr %339, i64 4224
  %467 = getelementptr inbounds nuw double, ptr %466, i64 %286
  %468 = load double, ptr %467, align 8, !tbaa !44
  %469 = getelementptr inbounds nuw i8, ptr %339, i64 4288
  %470 = getelementptr inbounds nuw double, ptr %469, i64 %286
  %471 = load double, ptr %470, align 8, !tbaa !44
  %472 = fsub double %468, %471
  %473 = fsub double %438, %465
  %474 = fsub double %472, %473
  %475 = fcmp ogt double %468, 0.000000e+00
  %476 = fneg double %468
  %477 = select i1 %475, double %468, double %476
  %478 = fcmp ogt double %471, 0.000000e+00
  %479 = fneg double %471
  %480 = select i1 %478, double %471, double %479
  %481 = fadd double %477, %480
  %482 = fcmp ogt double %474, 0.000000e+00
  %483 = fneg double %474
  %484 = select i1 %482, double %474, double %483
  %485 = fcmp ogt double %481, 1.000000e+00
  %486 = select i1 %485, double %481, double 1.000000e+00
  %487 = fdiv double %484, %486
  store double %487, ptr %350, align 8, !tbaa !44
  %488 = getelementptr inbounds nuw i8, ptr %339, i64 4160
  %489 = getelementptr inbounds nuw double, ptr %488, i64 %286
  %490 = load double, ptr %489, align 8, !tbaa !44
  %491 = getelementptr inbounds nuw i8, ptr %350, i64 8
  store double %490, ptr %491, align 8, !tbaa !44
  %492 = getelementptr inbounds nuw i8, ptr %339, i64 3968
  %493 = getelementptr inbounds nuw double, ptr %492, i64 %286
  %494 = load double, ptr %493, align 8, !tbaa !44
  %495 = getelementptr inbounds nuw i8, ptr %350, i64 16
  store double %494, ptr %495, align 8, !tbaa !44
  %496 = getelementptr inbounds nuw i8, ptr %339, i64 4032
  %497 = getelementptr inbounds nuw double, ptr %496, i64 %286
  %498 = load double, ptr %497, align 8, !tbaa !44
  %499 = getelementptr inbounds nuw i8, ptr %350, i64 24
  store double %498, ptr %499, align 8, !tbaa !44
  %500 = getelementptr inbounds nuw i8, ptr %339, i64 3904
  %501 = getelementptr inbounds nuw double, ptr %500, i64 %286
  %502 = load double, ptr %501, align 8, !tbaa !44
  %503 = getelementptr inbounds nuw i8, ptr %350, i64 32
  store double %502, ptr %503, align 8, !tbaa !44
  %504 = add nuw nsw i64 %338, 1
  %505 = icmp eq i64 %504, %320
  br i1 %505, label %529, label %337, !llvm.loop !55

506:                                              ; preds = %370, %506
  %507 = phi double [ %521, %506 ], [ %380, %370 ]
  %508 = phi double [ %526, %506 ], [ %369, %370 ]
  %509 = phi i64 [ %519, %506 ], [ 0, %370 ]
  %510 = phi i64 [ %527, %506 ], [ 0, %370 ]
  %511 = or disjoint i64 %509, 1
  %512 = getelementptr <8 x double>, ptr %373, i64 %511
  %513 = load double, ptr %512, align 8, !tbaa !44
  %514 = fsub double %513, %507
  %515 = fmul double %376, %514
  %516 = getelementptr <8 x double>, ptr %379, i64 %509
  %517 = load double, ptr %516, align 8, !tbaa !44
  %518 = tail call double @llvm.fmuladd.f64(double %515, double %517, double %508)
  %519 = add nuw nsw i64 %509, 2
  %520 = getelementptr <8 x double>, ptr %373, i64 %519
  %521 = load double, ptr %520, align 8, !tbaa !44
  %522 = fsub double %521, %513
  %523 = fmul double %376, %522
  %524 = getelementptr <8 x double>, ptr %379, i64 %511
  %525 = load double, ptr %524, align 8, !tbaa !44
  %526 = tail call double @llvm.fmuladd.f64(double %523, double %525, double %518)
  %527 = add i64 %510, 2
  %528 = icmp eq i64 %527, %335
  br i1 %528, label %423, label %506, !llvm.loop !56

529:                                              ; preds = %437, %295, %319
  %530 = load i64, ptr %155, align 8, !tbaa !27
  %531 = load i64, ptr %0, align 8, !tbaa !40
  %532 = icmp slt i64 %530, %531
  br i1 %532, label %535, label %533

533:                                              ; preds = %529
  store i64 0, ptr %288, align 8, !tbaa !30
  %534 = getelementptr inbounds nuw i64, ptr %156, i64 %286
  store i64 0, ptr %534, align 8, !tbaa !30
  br label %542

535:                                              ; preds = %529
  %536 = trunc nuw nsw i64 %286 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %536) #6
  %537 = load i64, ptr %288, align 8, !tbaa !30
  %538 = icmp eq i64 %537, 0
  br i1 %538, label %542, label %539

539:                                              ; preds = %535
  %540 = load double, ptr %292, align 8, !tbaa !44
  %541 = fcmp oeq double %540, 0.000000e+00
  br label %542

542:                                              ; preds = %533, %539, %535
  %543 = phi i1 [ true, %535 ], [ %541, %539 ], [ true, %533 ]
  %544 = and i1 %287, %543
  br label %545

545:                                              ; preds = %542, %291, %285
  %546 = phi i1 [ %287, %291 ], [ %544, %542 ], [ %287, %285 ]
  %547 = add nuw nsw i64 %286, 1
  %548 = icmp eq i64 %547, 8
  br i1 %548, label %552, label %549

549:                                              ; preds = %545, %553
  %550 = phi i64 [ %547, %545 ], [ 0, %553 ]
  %551 = phi i1 [ %546, %545 ], [ true, %553 ]
  br label %285, !llvm.loop !57

552:                                              ; preds = %545
  br i1 %546, label %558, label %553

553:                                              ; preds = %5856, %5898, %5895, %4037, %4365, %552
  %554 = load i64, ptr %133, align 8, !tbaa !42
  %555 = load i64, ptr %134, align 8, !tbaa !43
  %556 = sub nsw i64 %554, %555
  %557 = icmp slt i64 %556, 16
  br i1 %557, label %5899, label %549

558:                                              ; preds = %552
  %559 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %560 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %559)
  %561 = icmp eq i64 %560, 0
  br i1 %561, label %5899, label %562

562:                                              ; preds = %558
  %563 = load <8 x i64>, ptr %156, align 64, !tbaa !26
  %564 = and <8 x i64> %563, %559
  %565 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %564)
  %566 = icmp eq i64 %565, 0
  %567 = load i64, ptr %179, align 8, !tbaa !20
  br i1 %566, label %1536, label %568

568:                                              ; preds = %562
  %569 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %570 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %571 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %572 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %573 = fsub <8 x double> %571, %572
  %574 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %570, <8 x double> %573, <8 x double> %569)
  %575 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %576 = fcmp une <8 x double> %575, splat (double 2.000000e+00)
  %577 = select <8 x i1> %576, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %578 = fmul <8 x double> %574, %577
  %579 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %580 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %581 = fcmp olt <8 x double> %579, %580
  %582 = select <8 x i1> %581, <8 x double> %579, <8 x double> %580
  %583 = fcmp olt <8 x double> %582, %578
  %584 = select <8 x i1> %583, <8 x double> %582, <8 x double> %578
  %585 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %586 = fmul <8 x double> %585, splat (double 5.000000e-01)
  %587 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %588 = load <8 x i64>, ptr %166, align 64, !tbaa !26
  %589 = fneg <8 x double> %586
  %590 = icmp eq <8 x i64> %588, zeroinitializer
  %591 = select <8 x i1> %590, <8 x double> %589, <8 x double> %586
  %592 = fadd <8 x double> %587, %591
  %593 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %594 = fsub <8 x double> %592, %593
  %595 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %596 = select <8 x i1> %590, <8 x double> zeroinitializer, <8 x double> %595
  %597 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %598 = fsub <8 x double> %596, %597
  %599 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %600 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %601 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %601, <8 x double> %593, <8 x double> %600)
  %603 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %604 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %599, <8 x double> %602, <8 x double> %603)
  %605 = fdiv <8 x double> %598, %604
  %606 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %607 = fsub <8 x double> %593, %606
  %608 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %609 = fdiv <8 x double> %607, %608
  %610 = fsub <8 x double> %605, %609
  %611 = fdiv <8 x double> %610, %608
  %612 = fdiv <8 x double> %594, %605
  %613 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %614 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %615 = or <8 x i64> %614, %613
  %616 = icmp eq <8 x i64> %615, zeroinitializer
  %617 = select <8 x i1> %616, <8 x double> %611, <8 x double> zeroinitializer
  %618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %617, <8 x double> %612, <8 x double> %605)
  %619 = fdiv <8 x double> %594, %618
  %620 = fcmp ule <8 x double> %619, zeroinitializer
  %621 = select <8 x i1> %620, <8 x double> %612, <8 x double> %619
  %622 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %623 = fcmp une <8 x double> %622, zeroinitializer
  %624 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %625 = fcmp une <8 x double> %624, zeroinitializer
  %626 = fcmp ule <8 x double> %595, zeroinitializer
  %627 = or <8 x i1> %626, %623
  %628 = fcmp ule <8 x double> %612, zeroinitializer
  %629 = or <8 x i1> %628, %627
  %630 = or <8 x i1> %625, %629
  %631 = select <8 x i1> %630, <8 x double> splat (double 1.000000e+09), <8 x double> %621
  %632 = icmp sgt i64 %567, 0
  br i1 %632, label %633, label %701

633:                                              ; preds = %568
  %634 = load ptr, ptr %152, align 8, !tbaa !28
  %635 = fmul <8 x double> %608, splat (double 3.000000e+00)
  br label %636

636:                                              ; preds = %633, %636
  %637 = phi <8 x double> [ %631, %633 ], [ %698, %636 ]
  %638 = phi i64 [ 0, %633 ], [ %699, %636 ]
  %639 = getelementptr inbounds nuw %struct.Piece, ptr %634, i64 %638
  %640 = getelementptr inbounds nuw i8, ptr %639, i64 3904
  %641 = load <8 x double>, ptr %640, align 64, !tbaa !26
  %642 = getelementptr inbounds nuw i8, ptr %639, i64 1472
  %643 = load <8 x double>, ptr %642, align 64, !tbaa !26
  %644 = fsub <8 x double> %641, %643
  %645 = getelementptr inbounds nuw i8, ptr %639, i64 832
  %646 = load <8 x double>, ptr %645, align 64, !tbaa !26
  %647 = fmul <8 x double> %644, %646
  %648 = getelementptr inbounds nuw i8, ptr %639, i64 1600
  %649 = load <8 x double>, ptr %648, align 64, !tbaa !26
  %650 = getelementptr inbounds nuw i8, ptr %639, i64 4160
  %651 = load <8 x double>, ptr %650, align 64, !tbaa !26
  %652 = fsub <8 x double> %649, %651
  %653 = getelementptr inbounds nuw i8, ptr %639, i64 8320
  %654 = load <8 x i64>, ptr %653, align 64, !tbaa !26
  %655 = getelementptr inbounds nuw i8, ptr %639, i64 7616
  %656 = load <8 x double>, ptr %655, align 64, !tbaa !26
  %657 = fcmp une <8 x double> %656, splat (double 1.000000e+00)
  %658 = select <8 x i1> %657, <8 x double> %647, <8 x double> %652
  %659 = getelementptr inbounds nuw i8, ptr %639, i64 3968
  %660 = load <8 x double>, ptr %659, align 64, !tbaa !26
  %661 = icmp eq <8 x i64> %654, zeroinitializer
  %662 = select <8 x i1> %661, <8 x double> %660, <8 x double> %658
  %663 = getelementptr inbounds nuw i8, ptr %639, i64 6016
  %664 = load <8 x double>, ptr %663, align 64, !tbaa !26
  %665 = getelementptr inbounds nuw i8, ptr %639, i64 6080
  %666 = load <8 x double>, ptr %665, align 64, !tbaa !26
  %667 = fadd <8 x double> %664, %666
  %668 = getelementptr inbounds nuw i8, ptr %639, i64 7488
  %669 = load <8 x double>, ptr %668, align 64, !tbaa !26
  %670 = fdiv <8 x double> %669, %608
  %671 = select <8 x i1> %661, <8 x double> %670, <8 x double> zeroinitializer
  %672 = fsub <8 x double> %667, %671
  %673 = fdiv <8 x double> %662, %672
  %674 = getelementptr inbounds nuw i8, ptr %639, i64 4864
  %675 = load <8 x double>, ptr %674, align 64, !tbaa !26
  %676 = fsub <8 x double> %675, %660
  %677 = fdiv <8 x double> %676, %608
  %678 = getelementptr inbounds nuw i8, ptr %639, i64 8384
  %679 = load <8 x i64>, ptr %678, align 64, !tbaa !26
  %680 = or <8 x i64> %679, %654
  %681 = fcmp ule <8 x double> %673, %635
  %682 = fsub <8 x double> %672, %677
  %683 = icmp eq <8 x i64> %680, zeroinitializer
  %684 = select <8 x i1> %681, <8 x i1> %683, <8 x i1> zeroinitializer
  %685 = select <8 x i1> %684, <8 x double> %682, <8 x double> zeroinitializer
  %686 = fdiv <8 x double> %673, %608
  %687 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %685, <8 x double> %686, <8 x double> %672)
  %688 = fdiv <8 x double> %662, %687
  %689 = fcmp ule <8 x double> %688, zeroinitializer
  %690 = select <8 x i1> %689, <8 x double> %673, <8 x double> %688
  %691 = fcmp ule <8 x double> %662, zeroinitializer
  %692 = fcmp ule <8 x double> %672, zeroinitializer
  %693 = or <8 x i1> %691, %692
  %694 = fcmp ogt <8 x double> %690, splat (double 1.000000e-03)
  %695 = select <8 x i1> %694, <8 x double> %690, <8 x double> splat (double 1.000000e-03)
  %696 = select <8 x i1> %693, <8 x double> splat (double 1.000000e+09), <8 x double> %695
  %697 = fcmp olt <8 x double> %637, %696
  %698 = select <8 x i1> %697, <8 x double> %637, <8 x double> %696
  %699 = add nuw nsw i64 %638, 1
  %700 = icmp eq i64 %699, %567
  br i1 %700, label %701, label %636, !llvm.loop !58

701:                                              ; preds = %636, %568
  %702 = phi <8 x double> [ %631, %568 ], [ %698, %636 ]
  %703 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %704 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %705 = fadd <8 x double> %703, %704
  %706 = fsub <8 x double> %705, %571
  %707 = fmul <8 x double> %702, splat (double 1.050000e+00)
  %708 = fcmp ugt <8 x double> %706, %707
  %709 = select <8 x i1> %708, <8 x double> %702, <8 x double> %706
  %710 = fmul <8 x double> %584, splat (double 0x3FF000010C6F7A0B)
  %711 = fcmp ole <8 x double> %709, %710
  %712 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %713 = fcmp ogt <8 x double> %712, %584
  %714 = select <8 x i1> %713, <8 x double> %712, <8 x double> %584
  %715 = icmp ne <8 x i64> %564, zeroinitializer
  %716 = select <8 x i1> %711, <8 x i1> %715, <8 x i1> zeroinitializer
  %717 = select <8 x i1> %716, <8 x double> %714, <8 x double> %712
  store <8 x double> %717, ptr %182, align 64, !tbaa !26
  %718 = fmul <8 x double> %584, splat (double 2.000000e+00)
  %719 = fcmp uge <8 x double> %709, %718
  %720 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %721 = fcmp une <8 x double> %720, zeroinitializer
  %722 = or <8 x i1> %721, %719
  %723 = fmul <8 x double> %709, splat (double 5.000000e-01)
  %724 = select <8 x i1> %722, <8 x double> %584, <8 x double> %723
  %725 = select <8 x i1> %711, <8 x double> %709, <8 x double> %724
  %726 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %727 = icmp eq <8 x i64> %564, zeroinitializer
  %728 = select <8 x i1> %727, <8 x double> %726, <8 x double> %725
  store <8 x double> %728, ptr %183, align 64, !tbaa !26
  %729 = fdiv <8 x double> %728, %608
  %730 = fdiv <8 x double> splat (double 1.000000e+00), %728
  %731 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %729, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %732 = fadd <8 x double> %729, splat (double 1.000000e+00)
  %733 = fdiv <8 x double> %731, %732
  %734 = fmul <8 x double> %730, %733
  %735 = icmp eq <8 x i64> %613, zeroinitializer
  %736 = select <8 x i1> %735, <8 x double> %734, <8 x double> %730
  %737 = fneg <8 x double> %730
  %738 = fneg <8 x double> %732
  %739 = fmul <8 x double> %730, %738
  %740 = select <8 x i1> %735, <8 x double> %739, <8 x double> %737
  %741 = fmul <8 x double> %729, %729
  %742 = fdiv <8 x double> %741, %732
  %743 = fmul <8 x double> %730, %742
  %744 = select <8 x i1> %735, <8 x double> %743, <8 x double> zeroinitializer
  %745 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %746 = select <8 x i1> %727, <8 x double> %745, <8 x double> %736
  store <8 x double> %746, ptr %185, align 64, !tbaa !26
  %747 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %748 = select <8 x i1> %727, <8 x double> %747, <8 x double> %740
  store <8 x double> %748, ptr %186, align 64, !tbaa !26
  %749 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %750 = select <8 x i1> %727, <8 x double> %749, <8 x double> %744
  store <8 x double> %750, ptr %187, align 64, !tbaa !26
  %751 = select <8 x i1> %735, <8 x double> %729, <8 x double> zeroinitializer
  %752 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %751, <8 x double> %607, <8 x double> %593)
  %753 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %754 = select <8 x i1> %727, <8 x double> %753, <8 x double> %752
  %755 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %756 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %757 = fsub <8 x double> %755, %756
  %758 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %751, <8 x double> %757, <8 x double> %755)
  %759 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %760 = select <8 x i1> %727, <8 x double> %759, <8 x double> %758
  store <8 x double> %760, ptr %249, align 64, !tbaa !26
  %761 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %762 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %763 = fsub <8 x double> %761, %762
  %764 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %751, <8 x double> %763, <8 x double> %761)
  %765 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %766 = select <8 x i1> %727, <8 x double> %765, <8 x double> %764
  store <8 x double> %766, ptr %252, align 64, !tbaa !26
  %767 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %768 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %769 = fsub <8 x double> %767, %768
  %770 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %751, <8 x double> %769, <8 x double> %767)
  %771 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %772 = select <8 x i1> %727, <8 x double> %771, <8 x double> %770
  store <8 x double> %772, ptr %255, align 64, !tbaa !26
  %773 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %774 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %775 = fsub <8 x double> %773, %774
  %776 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %751, <8 x double> %775, <8 x double> %773)
  %777 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %778 = select <8 x i1> %727, <8 x double> %777, <8 x double> %776
  store <8 x double> %778, ptr %258, align 64, !tbaa !26
  %779 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %780 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %781 = fsub <8 x double> %779, %780
  %782 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %751, <8 x double> %781, <8 x double> %779)
  %783 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %784 = select <8 x i1> %727, <8 x double> %783, <8 x double> %782
  store <8 x double> %784, ptr %261, align 64, !tbaa !26
  %785 = load <8 x i64>, ptr %166, align 64, !tbaa !26
  %786 = icmp eq <8 x i64> %785, zeroinitializer
  %787 = select <8 x i1> %786, <8 x double> zeroinitializer, <8 x double> %595
  %788 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %789 = fsub <8 x double> %787, %788
  %790 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %601, <8 x double> %790, <8 x double> %600)
  %792 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %599, <8 x double> %791, <8 x double> %603)
  %793 = fdiv <8 x double> %789, %792
  %794 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %795 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %796 = or <8 x i64> %795, %794
  %797 = and <8 x i64> %796, %564
  %798 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %728, <8 x double> %793, <8 x double> %790)
  %799 = icmp eq <8 x i64> %797, zeroinitializer
  %800 = select <8 x i1> %625, <8 x i1> splat (i1 true), <8 x i1> %799
  %801 = select <8 x i1> %800, <8 x double> %754, <8 x double> %798
  store <8 x double> %801, ptr %188, align 64, !tbaa !26
  %802 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %803 = select <8 x i1> %727, <8 x double> %802, <8 x double> %789
  store <8 x double> %803, ptr %189, align 64, !tbaa !26
  %804 = xor <8 x i64> %795, splat (i64 -1)
  %805 = and <8 x i64> %794, %804
  store <8 x i64> %805, ptr %176, align 64, !tbaa !26
  %806 = load i64, ptr %179, align 8, !tbaa !20
  %807 = icmp sgt i64 %806, 0
  br i1 %807, label %808, label %1446

808:                                              ; preds = %701
  %809 = xor <8 x i64> %564, splat (i64 -1)
  br label %810

810:                                              ; preds = %808, %1414
  %811 = phi i64 [ 0, %808 ], [ %1430, %1414 ]
  %812 = load ptr, ptr %152, align 8, !tbaa !28
  %813 = getelementptr inbounds nuw %struct.Piece, ptr %812, i64 %811
  %814 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %815 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %816 = getelementptr inbounds nuw i8, ptr %813, i64 8384
  %817 = load <8 x i64>, ptr %816, align 64, !tbaa !26
  %818 = fdiv <8 x double> %814, %815
  %819 = fdiv <8 x double> splat (double 1.000000e+00), %814
  %820 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %818, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %821 = fadd <8 x double> %818, splat (double 1.000000e+00)
  %822 = fdiv <8 x double> %820, %821
  %823 = fmul <8 x double> %819, %822
  %824 = icmp eq <8 x i64> %817, zeroinitializer
  %825 = select <8 x i1> %824, <8 x double> %823, <8 x double> %819
  %826 = fneg <8 x double> %819
  %827 = fneg <8 x double> %821
  %828 = fmul <8 x double> %819, %827
  %829 = select <8 x i1> %824, <8 x double> %828, <8 x double> %826
  %830 = fmul <8 x double> %818, %818
  %831 = fdiv <8 x double> %830, %821
  %832 = fmul <8 x double> %819, %831
  %833 = select <8 x i1> %824, <8 x double> %832, <8 x double> zeroinitializer
  %834 = getelementptr inbounds nuw i8, ptr %813, i64 5632
  %835 = load <8 x double>, ptr %834, align 64, !tbaa !26
  %836 = select <8 x i1> %727, <8 x double> %835, <8 x double> %825
  store <8 x double> %836, ptr %834, align 64, !tbaa !26
  %837 = getelementptr inbounds nuw i8, ptr %813, i64 5696
  %838 = load <8 x double>, ptr %837, align 64, !tbaa !26
  %839 = select <8 x i1> %727, <8 x double> %838, <8 x double> %829
  store <8 x double> %839, ptr %837, align 64, !tbaa !26
  %840 = getelementptr inbounds nuw i8, ptr %813, i64 5760
  %841 = load <8 x double>, ptr %840, align 64, !tbaa !26
  %842 = select <8 x i1> %727, <8 x double> %841, <8 x double> %833
  store <8 x double> %842, ptr %840, align 64, !tbaa !26
  %843 = getelementptr inbounds nuw i8, ptr %813, i64 5824
  %844 = fdiv <8 x double> splat (double 1.000000e+00), %825
  %845 = load <8 x double>, ptr %843, align 64, !tbaa !26
  %846 = select <8 x i1> %727, <8 x double> %845, <8 x double> %844
  store <8 x double> %846, ptr %843, align 64, !tbaa !26
  %847 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %848 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %849 = fdiv <8 x double> %847, %848
  %850 = select <8 x i1> %824, <8 x double> %849, <8 x double> zeroinitializer
  %851 = getelementptr inbounds nuw i8, ptr %813, i64 2944
  %852 = getelementptr inbounds nuw i8, ptr %813, i64 3840
  %853 = getelementptr inbounds nuw i8, ptr %813, i64 4736
  br label %1433

854:                                              ; preds = %1433
  %855 = getelementptr inbounds nuw i8, ptr %813, i64 6080
  %856 = getelementptr inbounds nuw i8, ptr %813, i64 3520
  %857 = load <8 x double>, ptr %856, align 64, !tbaa !26
  %858 = fcmp ogt <8 x double> %857, zeroinitializer
  %859 = select <8 x i1> %858, <8 x double> %857, <8 x double> zeroinitializer
  %860 = load <8 x double>, ptr %855, align 64, !tbaa !26
  %861 = select <8 x i1> %727, <8 x double> %860, <8 x double> %859
  store <8 x double> %861, ptr %855, align 64, !tbaa !26
  %862 = getelementptr inbounds nuw i8, ptr %813, i64 384
  %863 = load <8 x double>, ptr %862, align 64, !tbaa !26
  %864 = getelementptr inbounds nuw i8, ptr %813, i64 448
  %865 = load <8 x double>, ptr %864, align 64, !tbaa !26
  %866 = getelementptr inbounds nuw i8, ptr %813, i64 512
  %867 = load <8 x double>, ptr %866, align 64, !tbaa !26
  %868 = getelementptr inbounds nuw i8, ptr %813, i64 640
  %869 = load <8 x double>, ptr %868, align 64, !tbaa !26
  %870 = getelementptr inbounds nuw i8, ptr %813, i64 768
  %871 = load <8 x double>, ptr %870, align 64, !tbaa !26
  %872 = getelementptr inbounds nuw i8, ptr %813, i64 832
  %873 = getelementptr inbounds nuw i8, ptr %813, i64 1536
  %874 = load <8 x double>, ptr %873, align 64, !tbaa !26
  %875 = getelementptr inbounds nuw i8, ptr %813, i64 1600
  %876 = getelementptr inbounds nuw i8, ptr %813, i64 4672
  %877 = load <8 x double>, ptr %876, align 64, !tbaa !26
  %878 = fsub <8 x double> %877, %874
  %879 = getelementptr inbounds nuw i8, ptr %813, i64 5568
  %880 = load <8 x double>, ptr %879, align 64, !tbaa !26
  %881 = fsub <8 x double> %880, %874
  %882 = load <8 x double>, ptr %837, align 64, !tbaa !26
  %883 = load <8 x double>, ptr %840, align 64, !tbaa !26
  %884 = fmul <8 x double> %878, %882
  %885 = fmul <8 x double> %881, %883
  %886 = fmul <8 x double> %874, %882
  %887 = fmul <8 x double> %869, %886
  %888 = fmul <8 x double> %874, %883
  %889 = fmul <8 x double> %869, %888
  %890 = getelementptr inbounds nuw i8, ptr %813, i64 8592
  %891 = load ptr, ptr %890, align 16, !tbaa !49
  %892 = getelementptr inbounds nuw i8, ptr %813, i64 8600
  %893 = load ptr, ptr %892, align 8, !tbaa !59
  %894 = getelementptr inbounds nuw i8, ptr %813, i64 8680
  %895 = load ptr, ptr %894, align 8, !tbaa !51
  %896 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %897 = and <8 x i64> %896, %809
  %898 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %897)
  %899 = icmp eq i64 %898, 0
  %900 = getelementptr inbounds nuw i8, ptr %813, i64 8584
  %901 = load ptr, ptr %900, align 8, !tbaa !60
  %902 = getelementptr inbounds nuw i8, ptr %813, i64 8608
  %903 = load ptr, ptr %902, align 32, !tbaa !61
  %904 = load i64, ptr %141, align 16, !tbaa !21
  %905 = icmp sgt i64 %904, 0
  br i1 %905, label %906, label %908

906:                                              ; preds = %854
  %907 = getelementptr inbounds nuw i8, ptr %813, i64 8512
  br label %921

908:                                              ; preds = %956, %854
  %909 = fmul <8 x double> %871, %882
  %910 = fmul <8 x double> %871, %883
  %911 = getelementptr inbounds nuw i8, ptr %813, i64 8760
  %912 = load ptr, ptr %911, align 8, !tbaa !52
  %913 = getelementptr inbounds nuw i8, ptr %813, i64 8768
  %914 = load ptr, ptr %913, align 64, !tbaa !62
  %915 = load i64, ptr %142, align 8, !tbaa !22
  %916 = icmp sgt i64 %915, 0
  br i1 %916, label %917, label %990

917:                                              ; preds = %908
  %918 = getelementptr inbounds nuw i8, ptr %813, i64 8712
  %919 = getelementptr inbounds nuw i8, ptr %813, i64 8720
  %920 = getelementptr inbounds nuw i8, ptr %813, i64 8728
  br label %963

921:                                              ; preds = %906, %956
  %922 = phi i64 [ 0, %906 ], [ %960, %956 ]
  %923 = getelementptr inbounds nuw <8 x double>, ptr %891, i64 %922
  %924 = load <8 x double>, ptr %923, align 64, !tbaa !26
  %925 = getelementptr inbounds nuw <8 x double>, ptr %893, i64 %922
  %926 = load <8 x double>, ptr %925, align 64, !tbaa !26
  %927 = fsub <8 x double> %924, %926
  %928 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %850, <8 x double> %927, <8 x double> %924)
  br i1 %899, label %933, label %929

929:                                              ; preds = %921
  %930 = getelementptr inbounds nuw <8 x double>, ptr %901, i64 %922
  %931 = load <8 x double>, ptr %930, align 64, !tbaa !26
  %932 = select <8 x i1> %727, <8 x double> %931, <8 x double> %928
  br label %933

933:                                              ; preds = %929, %921
  %934 = phi <8 x double> [ %932, %929 ], [ %928, %921 ]
  %935 = getelementptr inbounds nuw <8 x double>, ptr %901, i64 %922
  store <8 x double> %934, ptr %935, align 64, !tbaa !26
  %936 = load i64, ptr %907, align 64, !tbaa !31
  %937 = icmp slt i64 %922, %936
  %938 = getelementptr inbounds nuw <8 x double>, ptr %895, i64 %922
  %939 = load <8 x double>, ptr %938, align 64, !tbaa !26
  br i1 %937, label %940, label %943

940:                                              ; preds = %933
  %941 = fmul <8 x double> %889, %926
  %942 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %887, <8 x double> %924, <8 x double> %941)
  br label %956

943:                                              ; preds = %933
  %944 = fmul <8 x double> %867, %924
  %945 = fmul <8 x double> %944, splat (double 0x3FD5555555555555)
  %946 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %865, <8 x double> splat (double 5.000000e-01), <8 x double> %945)
  %947 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %924, <8 x double> %946, <8 x double> %863)
  %948 = fmul <8 x double> %924, %947
  %949 = fmul <8 x double> %867, %926
  %950 = fmul <8 x double> %949, splat (double 0x3FD5555555555555)
  %951 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %865, <8 x double> splat (double 5.000000e-01), <8 x double> %950)
  %952 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %926, <8 x double> %951, <8 x double> %863)
  %953 = fmul <8 x double> %926, %952
  %954 = fmul <8 x double> %885, %953
  %955 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %884, <8 x double> %948, <8 x double> %954)
  br label %956

956:                                              ; preds = %943, %940
  %957 = phi <8 x double> [ %955, %943 ], [ %942, %940 ]
  %958 = fmul <8 x double> %957, %939
  %959 = getelementptr inbounds nuw <8 x double>, ptr %903, i64 %922
  store <8 x double> %958, ptr %959, align 64, !tbaa !26
  %960 = add nuw nsw i64 %922, 1
  %961 = load i64, ptr %141, align 16, !tbaa !21
  %962 = icmp slt i64 %960, %961
  br i1 %962, label %921, label %908, !llvm.loop !63

963:                                              ; preds = %917, %963
  %964 = phi i64 [ 0, %917 ], [ %965, %963 ]
  %965 = add nuw nsw i64 %964, 1
  %966 = getelementptr inbounds nuw <8 x double>, ptr %912, i64 %965
  %967 = load <8 x double>, ptr %966, align 64, !tbaa !26
  %968 = getelementptr inbounds nuw <8 x double>, ptr %912, i64 %964
  %969 = load <8 x double>, ptr %968, align 64, !tbaa !26
  %970 = fsub <8 x double> %967, %969
  %971 = load ptr, ptr %918, align 8, !tbaa !53
  %972 = getelementptr inbounds nuw <8 x double>, ptr %971, i64 %964
  %973 = load <8 x double>, ptr %972, align 64, !tbaa !26
  %974 = fmul <8 x double> %970, %973
  %975 = getelementptr inbounds nuw <8 x double>, ptr %914, i64 %965
  %976 = load <8 x double>, ptr %975, align 64, !tbaa !26
  %977 = getelementptr inbounds nuw <8 x double>, ptr %914, i64 %964
  %978 = load <8 x double>, ptr %977, align 64, !tbaa !26
  %979 = fsub <8 x double> %976, %978
  %980 = load ptr, ptr %919, align 16, !tbaa !64
  %981 = getelementptr inbounds nuw <8 x double>, ptr %980, i64 %964
  %982 = load <8 x double>, ptr %981, align 64, !tbaa !26
  %983 = fmul <8 x double> %979, %982
  %984 = fmul <8 x double> %910, %983
  %985 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %909, <8 x double> %974, <8 x double> %984)
  %986 = load ptr, ptr %920, align 8, !tbaa !65
  %987 = getelementptr inbounds nuw <8 x double>, ptr %986, i64 %964
  store <8 x double> %985, ptr %987, align 64, !tbaa !26
  %988 = load i64, ptr %142, align 8, !tbaa !22
  %989 = icmp slt i64 %965, %988
  br i1 %989, label %963, label %990, !llvm.loop !66

990:                                              ; preds = %963, %908
  %991 = getelementptr inbounds nuw i8, ptr %813, i64 1664
  %992 = load <8 x double>, ptr %991, align 64, !tbaa !26
  %993 = fcmp ogt <8 x double> %992, zeroinitializer
  %994 = bitcast <8 x i1> %993 to i8
  %995 = icmp eq i8 %994, 0
  br i1 %995, label %996, label %1000

996:                                              ; preds = %990
  %997 = getelementptr inbounds nuw i8, ptr %813, i64 7488
  %998 = load <8 x double>, ptr %997, align 64, !tbaa !26
  %999 = select <8 x i1> %727, <8 x double> %998, <8 x double> zeroinitializer
  store <8 x double> %999, ptr %997, align 64, !tbaa !26
  br label %1109

1000:                                             ; preds = %990
  %1001 = load <8 x double>, ptr %873, align 64, !tbaa !26
  %1002 = getelementptr inbounds nuw i8, ptr %813, i64 1728
  %1003 = load <8 x double>, ptr %1002, align 64, !tbaa !26
  %1004 = getelementptr inbounds nuw i8, ptr %813, i64 1856
  %1005 = load <8 x double>, ptr %1004, align 64, !tbaa !26
  %1006 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %1007 = fneg <8 x double> %1006
  %1008 = fdiv <8 x double> %1007, %1003
  %1009 = fcmp ogt <8 x double> %1008, splat (double -7.000000e+02)
  %1010 = select <8 x i1> %1009, <8 x double> %1008, <8 x double> splat (double -7.000000e+02)
  %1011 = fcmp olt <8 x double> %1010, splat (double 7.000000e+02)
  %1012 = select <8 x i1> %1011, <8 x double> %1010, <8 x double> splat (double 7.000000e+02)
  %1013 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1012, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %1014 = fadd <8 x double> %1013, splat (double 0xC338000000000000)
  %1015 = fneg <8 x double> %1014
  %1016 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1015, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %1012)
  %1017 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1015, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %1016)
  %1018 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1017, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %1019 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1018, <8 x double> %1017, <8 x double> splat (double 0x3E5AE64567F544E4))
  %1020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1019, <8 x double> %1017, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %1021 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1020, <8 x double> %1017, <8 x double> splat (double 0x3EC71DE3A556C734))
  %1022 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1021, <8 x double> %1017, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %1023 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1022, <8 x double> %1017, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %1024 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1023, <8 x double> %1017, <8 x double> splat (double 0x3F56C16C16C16C17))
  %1025 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1024, <8 x double> %1017, <8 x double> splat (double 0x3F81111111111111))
  %1026 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1025, <8 x double> %1017, <8 x double> splat (double 0x3FA5555555555555))
  %1027 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1026, <8 x double> %1017, <8 x double> splat (double 0x3FC5555555555555))
  %1028 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1027, <8 x double> %1017, <8 x double> splat (double 5.000000e-01))
  %1029 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1028, <8 x double> %1017, <8 x double> splat (double 1.000000e+00))
  %1030 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1029, <8 x double> %1017, <8 x double> splat (double 1.000000e+00))
  %1031 = bitcast <8 x double> %1013 to <8 x i64>
  %1032 = shl <8 x i64> %1031, splat (i64 52)
  %1033 = bitcast <8 x double> %1030 to <8 x i64>
  %1034 = add <8 x i64> %1032, %1033
  %1035 = bitcast <8 x i64> %1034 to <8 x double>
  %1036 = fsub <8 x double> splat (double 1.000000e+00), %1035
  %1037 = load <8 x double>, ptr %876, align 64, !tbaa !26
  %1038 = fsub <8 x double> %1037, %1001
  %1039 = load ptr, ptr %900, align 8, !tbaa !60
  %1040 = load ptr, ptr %890, align 16, !tbaa !49
  %1041 = getelementptr inbounds nuw i8, ptr %813, i64 8624
  %1042 = load ptr, ptr %1041, align 16, !tbaa !50
  %1043 = load ptr, ptr %894, align 8, !tbaa !51
  %1044 = getelementptr inbounds nuw i8, ptr %813, i64 8616
  %1045 = load ptr, ptr %1044, align 8, !tbaa !67
  %1046 = getelementptr inbounds nuw i8, ptr %813, i64 8512
  %1047 = load i64, ptr %1046, align 64, !tbaa !31
  %1048 = load i64, ptr %141, align 16, !tbaa !21
  %1049 = icmp slt i64 %1047, %1048
  br i1 %1049, label %1050, label %1054

1050:                                             ; preds = %1000
  %1051 = getelementptr inbounds nuw i8, ptr %813, i64 1792
  %1052 = load <8 x double>, ptr %1051, align 64, !tbaa !26
  %1053 = fneg <8 x double> %1052
  br label %1066

1054:                                             ; preds = %1066, %1000
  %1055 = phi <8 x double> [ zeroinitializer, %1000 ], [ %1097, %1066 ]
  %1056 = phi <8 x double> [ zeroinitializer, %1000 ], [ %1105, %1066 ]
  %1057 = getelementptr inbounds nuw i8, ptr %813, i64 3904
  %1058 = load <8 x double>, ptr %1057, align 64, !tbaa !26
  %1059 = fsub <8 x double> %1058, %1037
  %1060 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1055, <8 x double> %1059, <8 x double> %1056)
  %1061 = getelementptr inbounds nuw i8, ptr %813, i64 7488
  %1062 = load <8 x double>, ptr %872, align 64, !tbaa !26
  %1063 = fmul <8 x double> %1062, %1060
  %1064 = load <8 x double>, ptr %1061, align 64, !tbaa !26
  %1065 = select <8 x i1> %727, <8 x double> %1064, <8 x double> %1063
  store <8 x double> %1065, ptr %1061, align 64, !tbaa !26
  br label %1109

1066:                                             ; preds = %1050, %1066
  %1067 = phi <8 x double> [ zeroinitializer, %1050 ], [ %1105, %1066 ]
  %1068 = phi i64 [ %1047, %1050 ], [ %1106, %1066 ]
  %1069 = getelementptr inbounds <8 x double>, ptr %1040, i64 %1068
  %1070 = load <8 x double>, ptr %1069, align 64, !tbaa !26
  %1071 = getelementptr inbounds <8 x double>, ptr %1039, i64 %1068
  %1072 = load <8 x double>, ptr %1071, align 64, !tbaa !26
  %1073 = fadd <8 x double> %1070, %1072
  %1074 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1073, <8 x double> splat (double 5.000000e-01), <8 x double> %1053)
  %1075 = fmul <8 x double> %1005, %1074
  %1076 = fcmp ogt <8 x double> %1075, splat (double -5.000000e+00)
  %1077 = select <8 x i1> %1076, <8 x double> %1075, <8 x double> splat (double -5.000000e+00)
  %1078 = fcmp olt <8 x double> %1077, splat (double 5.000000e+00)
  %1079 = select <8 x i1> %1078, <8 x double> %1077, <8 x double> splat (double 5.000000e+00)
  %1080 = fmul <8 x double> %1079, %1079
  %1081 = fadd <8 x double> %1080, splat (double 3.780000e+02)
  %1082 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1080, <8 x double> %1081, <8 x double> splat (double 1.732500e+04))
  %1083 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1080, <8 x double> %1082, <8 x double> splat (double 1.351350e+05))
  %1084 = fmul <8 x double> %1079, %1083
  %1085 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1080, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1086 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1080, <8 x double> %1085, <8 x double> splat (double 6.237000e+04))
  %1087 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1080, <8 x double> %1086, <8 x double> splat (double 1.351350e+05))
  %1088 = fdiv <8 x double> %1084, %1087
  %1089 = fadd <8 x double> %1088, splat (double 1.000000e+00)
  %1090 = fmul <8 x double> %992, %1089
  %1091 = getelementptr inbounds <8 x double>, ptr %1042, i64 %1068
  %1092 = load <8 x double>, ptr %1091, align 64, !tbaa !26
  %1093 = fadd <8 x double> %1092, splat (double -1.000000e+00)
  %1094 = fadd <8 x double> %1093, %1090
  %1095 = fcmp ogt <8 x double> %1094, zeroinitializer
  %1096 = select <8 x i1> %1095, <8 x double> %1094, <8 x double> zeroinitializer
  %1097 = fmul <8 x double> %1036, %1096
  %1098 = fsub <8 x double> %1092, %1097
  %1099 = getelementptr inbounds <8 x double>, ptr %1045, i64 %1068
  %1100 = load <8 x double>, ptr %1099, align 64, !tbaa !26
  %1101 = select <8 x i1> %727, <8 x double> %1100, <8 x double> %1098
  store <8 x double> %1101, ptr %1099, align 64, !tbaa !26
  %1102 = getelementptr inbounds <8 x double>, ptr %1043, i64 %1068
  %1103 = load <8 x double>, ptr %1102, align 64, !tbaa !26
  %1104 = fmul <8 x double> %1038, %1103
  %1105 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1097, <8 x double> %1104, <8 x double> %1067)
  %1106 = add nsw i64 %1068, 1
  %1107 = load i64, ptr %141, align 16, !tbaa !21
  %1108 = icmp slt i64 %1106, %1107
  br i1 %1108, label %1066, label %1054, !llvm.loop !68

1109:                                             ; preds = %996, %1054
  %1110 = load <8 x double>, ptr %851, align 64, !tbaa !26
  %1111 = load <8 x double>, ptr %852, align 64, !tbaa !26
  %1112 = fcmp olt <8 x double> %1110, %1111
  %1113 = select <8 x i1> %1112, <8 x double> %1110, <8 x double> %1111
  %1114 = load <8 x double>, ptr %813, align 64, !tbaa !26
  %1115 = fmul <8 x double> %1114, splat (double 3.000000e-01)
  %1116 = fcmp ogt <8 x double> %1113, %1115
  %1117 = select <8 x i1> %1116, <8 x double> %1113, <8 x double> %1115
  %1118 = select <8 x i1> %727, <8 x double> %1110, <8 x double> %1117
  store <8 x double> %1118, ptr %851, align 64, !tbaa !26
  %1119 = getelementptr inbounds nuw i8, ptr %813, i64 3072
  %1120 = load <8 x double>, ptr %1119, align 64, !tbaa !26, !noalias !69
  %1121 = getelementptr inbounds nuw i8, ptr %813, i64 7680
  %1122 = load <8 x double>, ptr %1121, align 64, !tbaa !26, !noalias !69
  %1123 = fmul <8 x double> %1120, %1122
  %1124 = fcmp ogt <8 x double> %1123, zeroinitializer
  %1125 = select <8 x i1> %1124, <8 x double> %1123, <8 x double> zeroinitializer
  %1126 = fcmp uge <8 x double> %1125, splat (double 1.000000e+00)
  %1127 = select <8 x i1> %1126, <8 x double> splat (double 1.000000e+00), <8 x double> %1125
  %1128 = getelementptr inbounds nuw i8, ptr %813, i64 8448
  %1129 = load <8 x i64>, ptr %1128, align 64, !tbaa !26, !noalias !69
  %1130 = load <8 x double>, ptr %190, align 64, !tbaa !26, !noalias !69
  %1131 = getelementptr inbounds nuw i8, ptr %813, i64 3200
  %1132 = load <8 x double>, ptr %1131, align 64, !tbaa !26, !noalias !69
  %1133 = icmp eq <8 x i64> %1129, zeroinitializer
  %1134 = select <8 x i1> %1133, <8 x double> %1132, <8 x double> %1130
  %1135 = getelementptr inbounds nuw i8, ptr %813, i64 3584
  %1136 = load <8 x double>, ptr %1135, align 64, !tbaa !26, !noalias !69
  %1137 = fsub <8 x double> splat (double 1.000000e+00), %1127
  %1138 = getelementptr inbounds nuw i8, ptr %813, i64 1984
  %1139 = load <8 x double>, ptr %1138, align 64, !tbaa !26, !noalias !69
  %1140 = getelementptr inbounds nuw i8, ptr %813, i64 8320
  %1141 = load <8 x i64>, ptr %1140, align 64, !tbaa !26, !noalias !69
  %1142 = fsub <8 x double> %1114, %1118
  %1143 = getelementptr inbounds nuw i8, ptr %813, i64 7744
  %1144 = load <8 x double>, ptr %1143, align 64, !tbaa !26, !noalias !69
  %1145 = fmul <8 x double> %1142, %1144
  %1146 = icmp eq <8 x i64> %1141, zeroinitializer
  %1147 = select <8 x i1> %1146, <8 x double> zeroinitializer, <8 x double> %1145
  %1148 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1137, <8 x double> %1139, <8 x double> %1147)
  %1149 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1136, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1150 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1136, <8 x double> %1149, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1151 = fdiv <8 x double> splat (double 1.000000e+00), %1150
  %1152 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1134, <8 x double> %1148, <8 x double> splat (double 1.000000e+00))
  %1153 = fdiv <8 x double> splat (double 1.000000e+00), %1152
  %1154 = load <8 x double>, ptr %191, align 64, !tbaa !26, !noalias !69
  %1155 = load <8 x double>, ptr %188, align 64, !tbaa !26, !noalias !69
  %1156 = select <8 x i1> %1133, <8 x double> %1155, <8 x double> %1154
  %1157 = fsub <8 x double> %1156, %1136
  %1158 = fmul <8 x double> %1157, %1153
  %1159 = fmul <8 x double> %1134, %1158
  %1160 = load <8 x double>, ptr %834, align 64, !tbaa !26, !noalias !69
  %1161 = getelementptr inbounds nuw i8, ptr %813, i64 3264
  %1162 = load <8 x double>, ptr %1161, align 64, !tbaa !26, !noalias !69
  %1163 = load <8 x double>, ptr %837, align 64, !tbaa !26, !noalias !69
  %1164 = getelementptr inbounds nuw i8, ptr %813, i64 4160
  %1165 = load <8 x double>, ptr %1164, align 64, !tbaa !26, !noalias !69
  %1166 = fmul <8 x double> %1163, %1165
  %1167 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1160, <8 x double> %1162, <8 x double> %1166)
  %1168 = load <8 x double>, ptr %840, align 64, !tbaa !26, !noalias !69
  %1169 = getelementptr inbounds nuw i8, ptr %813, i64 5056
  %1170 = load <8 x double>, ptr %1169, align 64, !tbaa !26, !noalias !69
  %1171 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1168, <8 x double> %1170, <8 x double> %1167)
  %1172 = getelementptr inbounds nuw i8, ptr %813, i64 7808
  %1173 = load <8 x double>, ptr %1172, align 64, !tbaa !26, !noalias !69
  %1174 = fmul <8 x double> %1144, %1173
  %1175 = fcmp ule <8 x double> %1127, zeroinitializer
  %1176 = or <8 x i1> %1126, %1175
  %1177 = fmul <8 x double> %1122, %1139
  %1178 = select <8 x i1> %1176, <8 x double> zeroinitializer, <8 x double> %1177
  %1179 = select <8 x i1> %1146, <8 x double> %1178, <8 x double> %1174
  %1180 = fmul <8 x double> %1134, %1159
  %1181 = fmul <8 x double> %1153, %1180
  %1182 = fmul <8 x double> %1151, %1181
  %1183 = fmul <8 x double> %1182, %1179
  %1184 = load <8 x double>, ptr %843, align 64, !tbaa !26, !noalias !69
  %1185 = fmul <8 x double> %1184, %1183
  %1186 = fadd <8 x double> %1185, splat (double 1.000000e+00)
  %1187 = fdiv <8 x double> splat (double 1.000000e+00), %1186
  %1188 = getelementptr inbounds nuw i8, ptr %813, i64 3456
  %1189 = load <8 x double>, ptr %1188, align 64, !tbaa !26, !noalias !69
  %1190 = fsub <8 x double> %1159, %1189
  %1191 = load <8 x double>, ptr %855, align 64, !tbaa !26, !noalias !69
  %1192 = fsub <8 x double> %1171, %1191
  %1193 = fmul <8 x double> %1185, %1192
  %1194 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1190, <8 x double> %1151, <8 x double> %1193)
  %1195 = fmul <8 x double> %1194, %1187
  %1196 = getelementptr inbounds nuw i8, ptr %813, i64 6016
  %1197 = load <8 x double>, ptr %1196, align 64, !tbaa !26, !noalias !69
  %1198 = fcmp ule <8 x double> %1197, zeroinitializer
  %1199 = fcmp ule <8 x double> %1195, zeroinitializer
  %1200 = or <8 x i1> %1198, %1199
  %1201 = select <8 x i1> %1200, <8 x double> zeroinitializer, <8 x double> %1195
  %1202 = getelementptr inbounds nuw i8, ptr %813, i64 2176
  %1203 = load <8 x double>, ptr %1202, align 64, !tbaa !26, !noalias !69
  %1204 = fcmp ogt <8 x double> %1203, zeroinitializer
  %1205 = getelementptr inbounds nuw i8, ptr %813, i64 1024
  %1206 = load <8 x double>, ptr %1205, align 64, !tbaa !26, !noalias !69
  %1207 = bitcast <8 x i1> %1204 to i8
  %1208 = icmp eq i8 %1207, 0
  br i1 %1208, label %1221, label %1209

1209:                                             ; preds = %1109
  %1210 = getelementptr inbounds nuw i8, ptr %813, i64 3648
  %1211 = load <8 x double>, ptr %1210, align 64, !tbaa !26, !noalias !69
  %1212 = fadd <8 x double> %1158, %1211
  %1213 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1212)
  %1214 = fcmp ogt <8 x double> %1203, splat (double 1.000000e-09)
  %1215 = select <8 x i1> %1214, <8 x double> %1203, <8 x double> splat (double 1.000000e-09)
  %1216 = fdiv <8 x double> %1213, %1215
  %1217 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1216)
  %1218 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1217)
  %1219 = select <8 x i1> %1204, <8 x double> %1218, <8 x double> splat (double 1.000000e+00)
  %1220 = fmul <8 x double> %1206, %1219
  br label %1221

1221:                                             ; preds = %1109, %1209
  %1222 = phi <8 x double> [ %1220, %1209 ], [ %1206, %1109 ]
  %1223 = getelementptr inbounds nuw i8, ptr %813, i64 4096
  %1224 = load <8 x double>, ptr %1223, align 64, !tbaa !26, !noalias !69
  %1225 = getelementptr inbounds nuw i8, ptr %813, i64 4992
  %1226 = load <8 x double>, ptr %1225, align 64, !tbaa !26, !noalias !69
  %1227 = fmul <8 x double> %1168, %1226
  %1228 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1163, <8 x double> %1224, <8 x double> %1227)
  %1229 = getelementptr inbounds nuw i8, ptr %813, i64 1216
  %1230 = load <8 x double>, ptr %1229, align 64, !tbaa !26, !noalias !69
  %1231 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1230, <8 x double> %1160, <8 x double> splat (double 1.000000e+00))
  %1232 = fdiv <8 x double> splat (double 1.000000e+00), %1231
  %1233 = fmul <8 x double> %1153, %1158
  %1234 = fmul <8 x double> %1151, %1233
  %1235 = fmul <8 x double> %1234, %1187
  %1236 = select <8 x i1> %1200, <8 x double> zeroinitializer, <8 x double> %1235
  %1237 = getelementptr inbounds nuw i8, ptr %813, i64 1088
  %1238 = load <8 x double>, ptr %1237, align 64, !tbaa !26, !noalias !69
  %1239 = fmul <8 x double> %1222, splat (double 2.500000e-01)
  %1240 = fmul <8 x double> %1148, %1239
  %1241 = fneg <8 x double> %1153
  %1242 = fmul <8 x double> %1240, %1241
  %1243 = select <8 x i1> %1204, <8 x double> %1242, <8 x double> splat (double -0.000000e+00)
  %1244 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1238, <8 x double> %1236, <8 x double> %1243)
  %1245 = fadd <8 x double> %1191, %1201
  %1246 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1238, <8 x double> %1245, <8 x double> %1222)
  %1247 = fneg <8 x double> %1230
  %1248 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1247, <8 x double> %1228, <8 x double> %1246)
  %1249 = fneg <8 x double> %1134
  %1250 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1232, <8 x double> %1248, <8 x double> %1249)
  %1251 = fmul <8 x double> %1232, %1244
  %1252 = fcmp olt <8 x double> %1251, splat (double 8.000000e-01)
  %1253 = select <8 x i1> %1252, <8 x double> %1251, <8 x double> splat (double 8.000000e-01)
  %1254 = fsub <8 x double> splat (double 1.000000e+00), %1253
  %1255 = fdiv <8 x double> %1250, %1254
  %1256 = fadd <8 x double> %1134, %1255
  %1257 = getelementptr inbounds nuw i8, ptr %813, i64 1152
  %1258 = load <8 x double>, ptr %1257, align 64, !tbaa !26, !noalias !69
  %1259 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1247, <8 x double> %1228, <8 x double> %1258)
  %1260 = fmul <8 x double> %1232, %1259
  %1261 = fcmp olt <8 x double> %1256, %1260
  %1262 = select <8 x i1> %1261, <8 x double> %1256, <8 x double> %1260
  %1263 = select <8 x i1> %1133, <8 x double> %1262, <8 x double> %1130
  %1264 = fsub <8 x double> %1263, %1134
  %1265 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1236, <8 x double> %1264, <8 x double> %1201)
  %1266 = fcmp ogt <8 x double> %1265, zeroinitializer
  %1267 = select <8 x i1> %1266, <8 x double> %1265, <8 x double> zeroinitializer
  %1268 = select <8 x i1> %727, <8 x double> %1132, <8 x double> %1263
  store <8 x double> %1268, ptr %1131, align 64, !tbaa !26
  %1269 = select <8 x i1> %727, <8 x double> %1197, <8 x double> %1267
  store <8 x double> %1269, ptr %1196, align 64, !tbaa !26
  %1270 = fadd <8 x double> %1191, %1269
  %1271 = fneg <8 x double> %1163
  %1272 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1271, <8 x double> %1165, <8 x double> %1270)
  %1273 = fneg <8 x double> %1168
  %1274 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1273, <8 x double> %1170, <8 x double> %1272)
  %1275 = fmul <8 x double> %1184, %1274
  %1276 = load <8 x double>, ptr %875, align 64, !tbaa !26, !noalias !72
  %1277 = fsub <8 x double> %1276, %1275
  %1278 = getelementptr inbounds nuw i8, ptr %813, i64 4032
  %1279 = load <8 x double>, ptr %1278, align 64, !tbaa !26, !noalias !72
  %1280 = getelementptr inbounds nuw i8, ptr %813, i64 7488
  %1281 = load <8 x double>, ptr %1280, align 64, !tbaa !26, !noalias !72
  %1282 = fsub <8 x double> %1279, %1281
  %1283 = getelementptr inbounds nuw i8, ptr %813, i64 3904
  %1284 = load <8 x double>, ptr %1283, align 64, !tbaa !26, !noalias !72
  %1285 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1141)
  %1286 = icmp eq i64 %1285, 0
  br i1 %1286, label %1414, label %1287

1287:                                             ; preds = %1221
  %1288 = fcmp ogt <8 x double> %1282, %1277
  %1289 = getelementptr inbounds nuw i8, ptr %813, i64 7616
  %1290 = load <8 x double>, ptr %1289, align 64, !tbaa !26, !noalias !72
  %1291 = fcmp oeq <8 x double> %1290, zeroinitializer
  %1292 = select <8 x i1> %1291, <8 x i1> %1288, <8 x i1> zeroinitializer
  %1293 = select <8 x i1> %1292, <8 x i64> %1141, <8 x i64> zeroinitializer
  %1294 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1293)
  %1295 = icmp eq i64 %1294, 0
  br i1 %1295, label %1364, label %1296

1296:                                             ; preds = %1287
  %1297 = fsub <8 x double> %1282, %1277
  %1298 = fmul <8 x double> %1173, %1297
  %1299 = getelementptr inbounds nuw i8, ptr %813, i64 8616
  %1300 = load ptr, ptr %1299, align 8, !tbaa !67, !noalias !72
  %1301 = load i64, ptr %141, align 16, !tbaa !21, !noalias !72
  %1302 = add nsw i64 %1301, -1
  %1303 = getelementptr inbounds <8 x double>, ptr %1300, i64 %1302
  %1304 = load <8 x double>, ptr %1303, align 64, !tbaa !26, !noalias !72
  %1305 = icmp sgt i64 %1301, 1
  br i1 %1305, label %1306, label %1356

1306:                                             ; preds = %1296
  %1307 = getelementptr inbounds nuw i8, ptr %813, i64 8512
  %1308 = load i64, ptr %1307, align 64, !tbaa !31, !noalias !72
  %1309 = getelementptr inbounds nuw i8, ptr %813, i64 8672
  br label %1310

1310:                                             ; preds = %1306, %1353
  %1311 = phi <8 x double> [ %1284, %1306 ], [ %1348, %1353 ]
  %1312 = phi i64 [ %1302, %1306 ], [ %1354, %1353 ]
  %1313 = phi <8 x double> [ %1304, %1306 ], [ %1336, %1353 ]
  %1314 = phi <8 x i64> [ %1293, %1306 ], [ %1340, %1353 ]
  %1315 = phi <8 x double> [ %1298, %1306 ], [ %1347, %1353 ]
  %1316 = icmp slt i64 %1312, %1308
  br i1 %1316, label %1317, label %1323

1317:                                             ; preds = %1310
  %1318 = load ptr, ptr %1309, align 32, !tbaa !75, !noalias !72
  %1319 = getelementptr inbounds nuw <8 x double>, ptr %1318, i64 %1312
  %1320 = load <8 x double>, ptr %1319, align 64, !tbaa !26, !noalias !72
  %1321 = load <8 x double>, ptr %873, align 64, !tbaa !26, !noalias !72
  %1322 = fmul <8 x double> %1320, %1321
  br label %1331

1323:                                             ; preds = %1310
  %1324 = load <8 x double>, ptr %876, align 64, !tbaa !26, !noalias !72
  %1325 = load <8 x double>, ptr %873, align 64, !tbaa !26, !noalias !72
  %1326 = load ptr, ptr %1309, align 32, !tbaa !75, !noalias !72
  %1327 = getelementptr inbounds nuw <8 x double>, ptr %1326, i64 %1312
  %1328 = load <8 x double>, ptr %1327, align 64, !tbaa !26, !noalias !72
  %1329 = fsub <8 x double> %1324, %1325
  %1330 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1328, <8 x double> %1329, <8 x double> %1325)
  br label %1331

1331:                                             ; preds = %1317, %1323
  %1332 = phi <8 x double> [ %1322, %1317 ], [ %1330, %1323 ]
  %1333 = getelementptr inbounds nuw <8 x double>, ptr %1300, i64 %1312
  %1334 = load <8 x double>, ptr %1333, align 64, !tbaa !26, !noalias !72
  %1335 = icmp eq <8 x i64> %1314, zeroinitializer
  %1336 = select <8 x i1> %1335, <8 x double> %1313, <8 x double> %1334
  %1337 = fsub <8 x double> %1311, %1332
  %1338 = fmul <8 x double> %1337, %1336
  %1339 = fcmp olt <8 x double> %1338, %1315
  %1340 = select <8 x i1> %1339, <8 x i64> %1314, <8 x i64> zeroinitializer
  %1341 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1340)
  %1342 = icmp eq i64 %1341, 0
  br i1 %1342, label %1356, label %1343

1343:                                             ; preds = %1331
  %1344 = fneg <8 x double> %1336
  %1345 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1344, <8 x double> %1337, <8 x double> %1315)
  %1346 = icmp eq <8 x i64> %1340, zeroinitializer
  %1347 = select <8 x i1> %1346, <8 x double> %1315, <8 x double> %1345
  %1348 = select <8 x i1> %1346, <8 x double> %1311, <8 x double> %1332
  %1349 = icmp eq i64 %1312, 1
  br i1 %1349, label %1350, label %1353

1350:                                             ; preds = %1343
  %1351 = load <8 x double>, ptr %1300, align 64, !tbaa !26, !noalias !72
  %1352 = select <8 x i1> %1346, <8 x double> %1336, <8 x double> %1351
  br label %1356

1353:                                             ; preds = %1343
  %1354 = add nsw i64 %1312, -1
  %1355 = icmp sgt i64 %1312, 1
  br i1 %1355, label %1310, label %1356, !llvm.loop !76

1356:                                             ; preds = %1353, %1331, %1350, %1296
  %1357 = phi <8 x double> [ %1298, %1296 ], [ %1347, %1350 ], [ %1315, %1331 ], [ %1347, %1353 ]
  %1358 = phi <8 x double> [ %1284, %1296 ], [ %1348, %1350 ], [ %1311, %1331 ], [ %1348, %1353 ]
  %1359 = phi <8 x double> [ %1304, %1296 ], [ %1352, %1350 ], [ %1336, %1331 ], [ %1336, %1353 ]
  %1360 = fdiv <8 x double> %1357, %1359
  %1361 = fsub <8 x double> %1358, %1360
  %1362 = icmp eq <8 x i64> %1293, zeroinitializer
  %1363 = select <8 x i1> %1362, <8 x double> %1284, <8 x double> %1361
  br label %1364

1364:                                             ; preds = %1356, %1287
  %1365 = phi <8 x double> [ %1363, %1356 ], [ %1284, %1287 ]
  %1366 = getelementptr inbounds nuw i8, ptr %813, i64 2624
  %1367 = load <8 x double>, ptr %1366, align 64, !tbaa !26, !noalias !72
  %1368 = getelementptr inbounds nuw i8, ptr %813, i64 2688
  %1369 = load <8 x double>, ptr %1368, align 64, !tbaa !26, !noalias !72
  %1370 = getelementptr inbounds nuw i8, ptr %813, i64 2752
  %1371 = load <8 x double>, ptr %1370, align 64, !tbaa !26, !noalias !72
  %1372 = getelementptr inbounds nuw i8, ptr %813, i64 2560
  %1373 = load <8 x double>, ptr %1372, align 64, !tbaa !26, !noalias !72
  %1374 = fmul <8 x double> %1114, splat (double 5.000000e-04)
  br label %1375

1375:                                             ; preds = %1364, %1375
  %1376 = phi <8 x i64> [ splat (i64 -1), %1364 ], [ %1398, %1375 ]
  %1377 = phi i32 [ 0, %1364 ], [ %1399, %1375 ]
  %1378 = phi <8 x double> [ %1118, %1364 ], [ %1395, %1375 ]
  %1379 = fmul <8 x double> %1378, splat (double 3.000000e+00)
  %1380 = fmul <8 x double> %1379, %1371
  %1381 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1369, <8 x double> splat (double 2.000000e+00), <8 x double> %1380)
  %1382 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1378, <8 x double> %1381, <8 x double> %1367)
  %1383 = fdiv <8 x double> splat (double 1.000000e+00), %1382
  %1384 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1378, <8 x double> %1371, <8 x double> %1369)
  %1385 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1378, <8 x double> %1384, <8 x double> %1367)
  %1386 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1378, <8 x double> %1385, <8 x double> %1373)
  %1387 = fsub <8 x double> %1386, %1365
  %1388 = fmul <8 x double> %1387, %1383
  %1389 = fmul <8 x double> %1388, %1388
  %1390 = fmul <8 x double> %1383, %1389
  %1391 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1379, <8 x double> %1371, <8 x double> %1369)
  %1392 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1390, <8 x double> %1391, <8 x double> %1388)
  %1393 = fsub <8 x double> %1378, %1392
  %1394 = icmp eq <8 x i64> %1376, zeroinitializer
  %1395 = select <8 x i1> %1394, <8 x double> %1378, <8 x double> %1393
  %1396 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1392)
  %1397 = fcmp oge <8 x double> %1396, %1374
  %1398 = select <8 x i1> %1397, <8 x i64> %1376, <8 x i64> zeroinitializer
  %1399 = add nuw nsw i32 %1377, 1
  %1400 = icmp samesign ult i32 %1377, 3
  %1401 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1398)
  %1402 = icmp ne i64 %1401, 0
  %1403 = select i1 %1400, i1 %1402, i1 false
  br i1 %1403, label %1375, label %1404, !llvm.loop !77

1404:                                             ; preds = %1375
  %1405 = fmul <8 x double> %1114, splat (double 2.800000e-01)
  %1406 = fcmp ogt <8 x double> %1395, %1405
  %1407 = select <8 x i1> %1406, <8 x double> %1395, <8 x double> %1405
  %1408 = fcmp olt <8 x double> %1407, %1114
  %1409 = select <8 x i1> %1408, <8 x double> %1407, <8 x double> %1114
  %1410 = select <8 x i1> %1146, <8 x double> %1118, <8 x double> %1409
  %1411 = fcmp olt <8 x double> %1282, %1277
  %1412 = select <8 x i1> %1146, <8 x i1> splat (i1 true), <8 x i1> %1411
  %1413 = select <8 x i1> %1412, <8 x double> %1282, <8 x double> %1277
  br label %1414

1414:                                             ; preds = %1221, %1404
  %1415 = phi <8 x double> [ %1413, %1404 ], [ %1282, %1221 ]
  %1416 = phi <8 x double> [ %1410, %1404 ], [ %1118, %1221 ]
  %1417 = phi <8 x double> [ %1365, %1404 ], [ %1284, %1221 ]
  %1418 = fsub <8 x double> %1277, %1415
  %1419 = select <8 x i1> %727, <8 x double> %1162, <8 x double> %1275
  store <8 x double> %1419, ptr %1161, align 64, !tbaa !26
  %1420 = select <8 x i1> %727, <8 x double> %1120, <8 x double> %1418
  store <8 x double> %1420, ptr %1119, align 64, !tbaa !26
  %1421 = getelementptr inbounds nuw i8, ptr %813, i64 3136
  %1422 = load <8 x double>, ptr %1421, align 64, !tbaa !26
  %1423 = select <8 x i1> %727, <8 x double> %1422, <8 x double> %1415
  store <8 x double> %1423, ptr %1421, align 64, !tbaa !26
  %1424 = getelementptr inbounds nuw i8, ptr %813, i64 3008
  %1425 = and <8 x i64> %1141, %564
  %1426 = load <8 x double>, ptr %1424, align 64, !tbaa !26
  %1427 = icmp eq <8 x i64> %1425, zeroinitializer
  %1428 = select <8 x i1> %1427, <8 x double> %1426, <8 x double> %1417
  store <8 x double> %1428, ptr %1424, align 64, !tbaa !26
  %1429 = select <8 x i1> %1427, <8 x double> %1118, <8 x double> %1416
  store <8 x double> %1429, ptr %851, align 64, !tbaa !26
  %1430 = add nuw nsw i64 %811, 1
  %1431 = load i64, ptr %179, align 8, !tbaa !20
  %1432 = icmp slt i64 %1430, %1431
  br i1 %1432, label %810, label %1446, !llvm.loop !78

1433:                                             ; preds = %810, %1433
  %1434 = phi i64 [ 0, %810 ], [ %1444, %1433 ]
  %1435 = getelementptr inbounds nuw [14 x <8 x double>], ptr %851, i64 0, i64 %1434
  %1436 = getelementptr inbounds nuw [14 x <8 x double>], ptr %852, i64 0, i64 %1434
  %1437 = load <8 x double>, ptr %1436, align 64, !tbaa !26
  %1438 = getelementptr inbounds nuw [14 x <8 x double>], ptr %853, i64 0, i64 %1434
  %1439 = load <8 x double>, ptr %1438, align 64, !tbaa !26
  %1440 = fsub <8 x double> %1437, %1439
  %1441 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %850, <8 x double> %1440, <8 x double> %1437)
  %1442 = load <8 x double>, ptr %1435, align 64, !tbaa !26
  %1443 = select <8 x i1> %727, <8 x double> %1442, <8 x double> %1441
  store <8 x double> %1443, ptr %1435, align 64, !tbaa !26
  %1444 = add nuw nsw i64 %1434, 1
  %1445 = icmp eq i64 %1444, 13
  br i1 %1445, label %854, label %1433, !llvm.loop !79

1446:                                             ; preds = %1414, %701
  %1447 = phi i64 [ %806, %701 ], [ %1431, %1414 ]
  %1448 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %1449 = fcmp ogt <8 x double> %1448, zeroinitializer
  %1450 = select <8 x i1> %1449, <8 x i64> %564, <8 x i64> zeroinitializer
  %1451 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1450)
  %1452 = icmp eq i64 %1451, 0
  br i1 %1452, label %1536, label %1453

1453:                                             ; preds = %1446
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1450, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1454 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %1455 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %1456 = fadd <8 x double> %1454, %1455
  store <8 x double> %1456, ptr %9, align 64, !tbaa !26
  %1457 = load ptr, ptr %192, align 8
  %1458 = load ptr, ptr %194, align 8
  %1459 = load ptr, ptr %195, align 8
  br label %1460

1460:                                             ; preds = %1528, %1453
  %1461 = phi i64 [ 0, %1453 ], [ %1529, %1528 ]
  %1462 = getelementptr inbounds nuw i64, ptr %7, i64 %1461
  %1463 = load i64, ptr %1462, align 8, !tbaa !30
  %1464 = icmp eq i64 %1463, 0
  br i1 %1464, label %1528, label %1465

1465:                                             ; preds = %1460
  %1466 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %1461
  %1467 = load i64, ptr %1466, align 8, !tbaa !30
  %1468 = shl nsw i64 %1467, 1
  %1469 = getelementptr inbounds i64, ptr %1457, i64 %1468
  %1470 = load i64, ptr %1469, align 8, !tbaa !30
  %1471 = shl nuw nsw i64 %1461, 1
  %1472 = getelementptr inbounds nuw [16 x i64], ptr %193, i64 0, i64 %1471
  %1473 = getelementptr inbounds i64, ptr %1459, i64 %1468
  %1474 = load i64, ptr %1473, align 8, !tbaa !30
  %1475 = shl nsw i64 %1474, 4
  %1476 = getelementptr inbounds i8, ptr %1458, i64 %1475
  %1477 = getelementptr inbounds nuw double, ptr %9, i64 %1461
  %1478 = load double, ptr %1477, align 8, !tbaa !44
  %1479 = load i64, ptr %1472, align 8, !tbaa !30
  %1480 = getelementptr i8, ptr %1476, i64 -16
  %1481 = icmp sgt i64 %1479, 0
  br i1 %1481, label %1482, label %1491

1482:                                             ; preds = %1465, %1488
  %1483 = phi i64 [ %1489, %1488 ], [ %1479, %1465 ]
  %1484 = shl i64 %1483, 4
  %1485 = getelementptr i8, ptr %1480, i64 %1484
  %1486 = load double, ptr %1485, align 8, !tbaa !44
  %1487 = fcmp ugt double %1478, %1486
  br i1 %1487, label %1491, label %1488

1488:                                             ; preds = %1482
  %1489 = add nsw i64 %1483, -1
  store i64 %1489, ptr %1472, align 8, !tbaa !30
  %1490 = icmp sgt i64 %1483, 1
  br i1 %1490, label %1482, label %1491, !llvm.loop !80

1491:                                             ; preds = %1488, %1482, %1465
  %1492 = phi i64 [ %1479, %1465 ], [ 0, %1488 ], [ %1483, %1482 ]
  %1493 = icmp slt i64 %1492, %1470
  br i1 %1493, label %1494, label %1503

1494:                                             ; preds = %1491, %1500
  %1495 = phi i64 [ %1501, %1500 ], [ %1492, %1491 ]
  %1496 = shl nsw i64 %1495, 4
  %1497 = getelementptr inbounds i8, ptr %1476, i64 %1496
  %1498 = load double, ptr %1497, align 8, !tbaa !44
  %1499 = fcmp ule double %1478, %1498
  br i1 %1499, label %1508, label %1500

1500:                                             ; preds = %1494
  %1501 = add i64 %1495, 1
  store i64 %1501, ptr %1472, align 8, !tbaa !30
  %1502 = icmp eq i64 %1501, %1470
  br i1 %1502, label %1503, label %1494, !llvm.loop !81

1503:                                             ; preds = %1500, %1491
  %1504 = shl i64 %1470, 4
  %1505 = getelementptr i8, ptr %1476, i64 %1504
  %1506 = getelementptr i8, ptr %1505, i64 -8
  %1507 = load double, ptr %1506, align 8, !tbaa !44
  br label %1525

1508:                                             ; preds = %1494
  %1509 = shl nsw i64 %1495, 1
  %1510 = or disjoint i64 %1509, 1
  %1511 = getelementptr inbounds double, ptr %1476, i64 %1510
  %1512 = load double, ptr %1511, align 8, !tbaa !44
  %1513 = icmp sgt i64 %1495, 0
  br i1 %1513, label %1514, label %1525

1514:                                             ; preds = %1508
  %1515 = getelementptr inbounds nuw i8, ptr %1476, i64 %1496
  %1516 = getelementptr i8, ptr %1515, i64 -8
  %1517 = load double, ptr %1516, align 8, !tbaa !44
  %1518 = getelementptr i8, ptr %1515, i64 -16
  %1519 = load double, ptr %1518, align 8, !tbaa !44
  %1520 = fsub double %1478, %1519
  %1521 = fsub double %1498, %1519
  %1522 = fdiv double %1520, %1521
  %1523 = fsub double %1512, %1517
  %1524 = tail call double @llvm.fmuladd.f64(double %1522, double %1523, double %1517)
  br label %1525

1525:                                             ; preds = %1514, %1508, %1503
  %1526 = phi double [ %1524, %1514 ], [ %1512, %1508 ], [ %1507, %1503 ]
  %1527 = getelementptr inbounds nuw double, ptr %8, i64 %1461
  store double %1526, ptr %1527, align 8, !tbaa !44
  br label %1528

1528:                                             ; preds = %1525, %1460
  %1529 = add nuw nsw i64 %1461, 1
  %1530 = icmp eq i64 %1529, 8
  br i1 %1530, label %1531, label %1460, !llvm.loop !82

1531:                                             ; preds = %1528
  %1532 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1533 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %1534 = icmp eq <8 x i64> %1450, zeroinitializer
  %1535 = select <8 x i1> %1534, <8 x double> %1533, <8 x double> %1532
  store <8 x double> %1535, ptr %188, align 64, !tbaa !26
  br label %1536

1536:                                             ; preds = %1446, %1531, %562
  %1537 = phi i64 [ %1447, %1446 ], [ %1447, %1531 ], [ %567, %562 ]
  %1538 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %1539 = icmp eq <8 x i64> %564, zeroinitializer
  %1540 = select <8 x i1> %1539, <8 x double> %1538, <8 x double> zeroinitializer
  store <8 x double> %1540, ptr %196, align 64, !tbaa !26
  %1541 = icmp sgt i64 %1537, 0
  br i1 %1541, label %1544, label %1542

1542:                                             ; preds = %1536
  %1543 = load <8 x double>, ptr %197, align 64, !tbaa !26
  br label %2384

1544:                                             ; preds = %1536
  %1545 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %1546 = xor <8 x i64> %564, splat (i64 -1)
  %1547 = and <8 x i64> %1545, %1546
  %1548 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1547)
  %1549 = icmp eq i64 %1548, 0
  %1550 = icmp eq <8 x i64> %1547, zeroinitializer
  br label %1554

1551:                                             ; preds = %2378
  %1552 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %1553 = icmp sgt i64 %2382, 0
  br i1 %1553, label %2390, label %2384

1554:                                             ; preds = %1544, %2378
  %1555 = phi i64 [ 0, %1544 ], [ %2381, %2378 ]
  %1556 = load ptr, ptr %152, align 8, !tbaa !28
  %1557 = getelementptr inbounds nuw %struct.Piece, ptr %1556, i64 %1555
  br i1 %1549, label %1558, label %1585

1558:                                             ; preds = %1554
  %1559 = getelementptr inbounds nuw i8, ptr %1557, i64 8448
  %1560 = load <8 x i64>, ptr %1559, align 64, !tbaa !26
  %1561 = getelementptr inbounds nuw i8, ptr %1557, i64 3072
  %1562 = load <8 x double>, ptr %1561, align 64, !tbaa !26
  %1563 = getelementptr inbounds nuw i8, ptr %1557, i64 7680
  %1564 = load <8 x double>, ptr %1563, align 64, !tbaa !26
  %1565 = getelementptr inbounds nuw i8, ptr %1557, i64 5696
  %1566 = load <8 x double>, ptr %1565, align 64, !tbaa !26
  %1567 = getelementptr inbounds nuw i8, ptr %1557, i64 5760
  %1568 = load <8 x double>, ptr %1567, align 64, !tbaa !26
  %1569 = getelementptr inbounds nuw i8, ptr %1557, i64 8320
  %1570 = load <8 x i64>, ptr %1569, align 64, !tbaa !26
  %1571 = getelementptr inbounds nuw i8, ptr %1557, i64 1984
  %1572 = load <8 x double>, ptr %1571, align 64, !tbaa !26
  %1573 = load <8 x double>, ptr %1557, align 64, !tbaa !26
  %1574 = getelementptr inbounds nuw i8, ptr %1557, i64 2944
  %1575 = load <8 x double>, ptr %1574, align 64, !tbaa !26
  %1576 = getelementptr inbounds nuw i8, ptr %1557, i64 7744
  %1577 = load <8 x double>, ptr %1576, align 64, !tbaa !26
  %1578 = getelementptr inbounds nuw i8, ptr %1557, i64 5632
  %1579 = load <8 x double>, ptr %1578, align 64, !tbaa !26
  %1580 = getelementptr inbounds nuw i8, ptr %1557, i64 6016
  %1581 = load <8 x double>, ptr %1580, align 64, !tbaa !26
  %1582 = fmul <8 x double> %1562, %1564
  %1583 = fsub <8 x double> %1573, %1575
  %1584 = fmul <8 x double> %1583, %1577
  br label %1740

1585:                                             ; preds = %1554
  %1586 = getelementptr inbounds nuw i8, ptr %1557, i64 3200
  %1587 = getelementptr inbounds nuw i8, ptr %1557, i64 3072
  %1588 = load <8 x double>, ptr %1587, align 64, !tbaa !26, !noalias !83
  %1589 = getelementptr inbounds nuw i8, ptr %1557, i64 7680
  %1590 = load <8 x double>, ptr %1589, align 64, !tbaa !26, !noalias !83
  %1591 = fmul <8 x double> %1588, %1590
  %1592 = fcmp ogt <8 x double> %1591, zeroinitializer
  %1593 = select <8 x i1> %1592, <8 x double> %1591, <8 x double> zeroinitializer
  %1594 = fcmp uge <8 x double> %1593, splat (double 1.000000e+00)
  %1595 = select <8 x i1> %1594, <8 x double> splat (double 1.000000e+00), <8 x double> %1593
  %1596 = getelementptr inbounds nuw i8, ptr %1557, i64 8448
  %1597 = load <8 x i64>, ptr %1596, align 64, !tbaa !26, !noalias !83
  %1598 = load <8 x double>, ptr %190, align 64, !tbaa !26, !noalias !83
  %1599 = load <8 x double>, ptr %1586, align 64, !tbaa !26, !noalias !83
  %1600 = icmp eq <8 x i64> %1597, zeroinitializer
  %1601 = select <8 x i1> %1600, <8 x double> %1599, <8 x double> %1598
  %1602 = getelementptr inbounds nuw i8, ptr %1557, i64 3584
  %1603 = load <8 x double>, ptr %1602, align 64, !tbaa !26, !noalias !83
  %1604 = fsub <8 x double> splat (double 1.000000e+00), %1595
  %1605 = getelementptr inbounds nuw i8, ptr %1557, i64 1984
  %1606 = load <8 x double>, ptr %1605, align 64, !tbaa !26, !noalias !83
  %1607 = getelementptr inbounds nuw i8, ptr %1557, i64 8320
  %1608 = load <8 x i64>, ptr %1607, align 64, !tbaa !26, !noalias !83
  %1609 = load <8 x double>, ptr %1557, align 64, !tbaa !26, !noalias !83
  %1610 = getelementptr inbounds nuw i8, ptr %1557, i64 2944
  %1611 = load <8 x double>, ptr %1610, align 64, !tbaa !26, !noalias !83
  %1612 = fsub <8 x double> %1609, %1611
  %1613 = getelementptr inbounds nuw i8, ptr %1557, i64 7744
  %1614 = load <8 x double>, ptr %1613, align 64, !tbaa !26, !noalias !83
  %1615 = fmul <8 x double> %1612, %1614
  %1616 = icmp eq <8 x i64> %1608, zeroinitializer
  %1617 = select <8 x i1> %1616, <8 x double> zeroinitializer, <8 x double> %1615
  %1618 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1604, <8 x double> %1606, <8 x double> %1617)
  %1619 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1603, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1620 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1603, <8 x double> %1619, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1621 = fdiv <8 x double> splat (double 1.000000e+00), %1620
  %1622 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1601, <8 x double> %1618, <8 x double> splat (double 1.000000e+00))
  %1623 = fdiv <8 x double> splat (double 1.000000e+00), %1622
  %1624 = load <8 x double>, ptr %191, align 64, !tbaa !26, !noalias !83
  %1625 = load <8 x double>, ptr %188, align 64, !tbaa !26, !noalias !83
  %1626 = select <8 x i1> %1600, <8 x double> %1625, <8 x double> %1624
  %1627 = fsub <8 x double> %1626, %1603
  %1628 = fmul <8 x double> %1627, %1623
  %1629 = fmul <8 x double> %1601, %1628
  %1630 = getelementptr inbounds nuw i8, ptr %1557, i64 5632
  %1631 = load <8 x double>, ptr %1630, align 64, !tbaa !26, !noalias !83
  %1632 = getelementptr inbounds nuw i8, ptr %1557, i64 3264
  %1633 = load <8 x double>, ptr %1632, align 64, !tbaa !26, !noalias !83
  %1634 = getelementptr inbounds nuw i8, ptr %1557, i64 5696
  %1635 = load <8 x double>, ptr %1634, align 64, !tbaa !26, !noalias !83
  %1636 = getelementptr inbounds nuw i8, ptr %1557, i64 4160
  %1637 = load <8 x double>, ptr %1636, align 64, !tbaa !26, !noalias !83
  %1638 = fmul <8 x double> %1635, %1637
  %1639 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1631, <8 x double> %1633, <8 x double> %1638)
  %1640 = getelementptr inbounds nuw i8, ptr %1557, i64 5760
  %1641 = load <8 x double>, ptr %1640, align 64, !tbaa !26, !noalias !83
  %1642 = getelementptr inbounds nuw i8, ptr %1557, i64 5056
  %1643 = load <8 x double>, ptr %1642, align 64, !tbaa !26, !noalias !83
  %1644 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1641, <8 x double> %1643, <8 x double> %1639)
  %1645 = getelementptr inbounds nuw i8, ptr %1557, i64 7808
  %1646 = load <8 x double>, ptr %1645, align 64, !tbaa !26, !noalias !83
  %1647 = fmul <8 x double> %1614, %1646
  %1648 = fcmp ule <8 x double> %1595, zeroinitializer
  %1649 = or <8 x i1> %1594, %1648
  %1650 = fmul <8 x double> %1590, %1606
  %1651 = select <8 x i1> %1649, <8 x double> zeroinitializer, <8 x double> %1650
  %1652 = select <8 x i1> %1616, <8 x double> %1651, <8 x double> %1647
  %1653 = fmul <8 x double> %1601, %1629
  %1654 = fmul <8 x double> %1623, %1653
  %1655 = fmul <8 x double> %1621, %1654
  %1656 = fmul <8 x double> %1655, %1652
  %1657 = getelementptr inbounds nuw i8, ptr %1557, i64 5824
  %1658 = load <8 x double>, ptr %1657, align 64, !tbaa !26, !noalias !83
  %1659 = fmul <8 x double> %1658, %1656
  %1660 = fadd <8 x double> %1659, splat (double 1.000000e+00)
  %1661 = fdiv <8 x double> splat (double 1.000000e+00), %1660
  %1662 = getelementptr inbounds nuw i8, ptr %1557, i64 3456
  %1663 = load <8 x double>, ptr %1662, align 64, !tbaa !26, !noalias !83
  %1664 = fsub <8 x double> %1629, %1663
  %1665 = getelementptr inbounds nuw i8, ptr %1557, i64 6080
  %1666 = load <8 x double>, ptr %1665, align 64, !tbaa !26, !noalias !83
  %1667 = fsub <8 x double> %1644, %1666
  %1668 = fmul <8 x double> %1659, %1667
  %1669 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1664, <8 x double> %1621, <8 x double> %1668)
  %1670 = fmul <8 x double> %1669, %1661
  %1671 = getelementptr inbounds nuw i8, ptr %1557, i64 6016
  %1672 = load <8 x double>, ptr %1671, align 64, !tbaa !26, !noalias !83
  %1673 = fcmp ule <8 x double> %1672, zeroinitializer
  %1674 = fcmp ule <8 x double> %1670, zeroinitializer
  %1675 = or <8 x i1> %1673, %1674
  %1676 = select <8 x i1> %1675, <8 x double> zeroinitializer, <8 x double> %1670
  %1677 = getelementptr inbounds nuw i8, ptr %1557, i64 2176
  %1678 = load <8 x double>, ptr %1677, align 64, !tbaa !26, !noalias !83
  %1679 = fcmp ogt <8 x double> %1678, zeroinitializer
  %1680 = getelementptr inbounds nuw i8, ptr %1557, i64 1024
  %1681 = load <8 x double>, ptr %1680, align 64, !tbaa !26, !noalias !83
  %1682 = bitcast <8 x i1> %1679 to i8
  %1683 = icmp eq i8 %1682, 0
  br i1 %1683, label %1696, label %1684

1684:                                             ; preds = %1585
  %1685 = getelementptr inbounds nuw i8, ptr %1557, i64 3648
  %1686 = load <8 x double>, ptr %1685, align 64, !tbaa !26, !noalias !83
  %1687 = fadd <8 x double> %1628, %1686
  %1688 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1687)
  %1689 = fcmp ogt <8 x double> %1678, splat (double 1.000000e-09)
  %1690 = select <8 x i1> %1689, <8 x double> %1678, <8 x double> splat (double 1.000000e-09)
  %1691 = fdiv <8 x double> %1688, %1690
  %1692 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1691)
  %1693 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1692)
  %1694 = select <8 x i1> %1679, <8 x double> %1693, <8 x double> splat (double 1.000000e+00)
  %1695 = fmul <8 x double> %1681, %1694
  br label %1696

1696:                                             ; preds = %1684, %1585
  %1697 = phi <8 x double> [ %1695, %1684 ], [ %1681, %1585 ]
  %1698 = getelementptr inbounds nuw i8, ptr %1557, i64 4096
  %1699 = load <8 x double>, ptr %1698, align 64, !tbaa !26, !noalias !83
  %1700 = getelementptr inbounds nuw i8, ptr %1557, i64 4992
  %1701 = load <8 x double>, ptr %1700, align 64, !tbaa !26, !noalias !83
  %1702 = fmul <8 x double> %1641, %1701
  %1703 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1635, <8 x double> %1699, <8 x double> %1702)
  %1704 = getelementptr inbounds nuw i8, ptr %1557, i64 1216
  %1705 = load <8 x double>, ptr %1704, align 64, !tbaa !26, !noalias !83
  %1706 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1705, <8 x double> %1631, <8 x double> splat (double 1.000000e+00))
  %1707 = fdiv <8 x double> splat (double 1.000000e+00), %1706
  %1708 = fmul <8 x double> %1623, %1628
  %1709 = fmul <8 x double> %1621, %1708
  %1710 = fmul <8 x double> %1709, %1661
  %1711 = select <8 x i1> %1675, <8 x double> zeroinitializer, <8 x double> %1710
  %1712 = getelementptr inbounds nuw i8, ptr %1557, i64 1088
  %1713 = load <8 x double>, ptr %1712, align 64, !tbaa !26, !noalias !83
  %1714 = fmul <8 x double> %1697, splat (double 2.500000e-01)
  %1715 = fmul <8 x double> %1618, %1714
  %1716 = fneg <8 x double> %1623
  %1717 = fmul <8 x double> %1715, %1716
  %1718 = select <8 x i1> %1679, <8 x double> %1717, <8 x double> splat (double -0.000000e+00)
  %1719 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1713, <8 x double> %1711, <8 x double> %1718)
  %1720 = fadd <8 x double> %1666, %1676
  %1721 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1713, <8 x double> %1720, <8 x double> %1697)
  %1722 = fneg <8 x double> %1705
  %1723 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1722, <8 x double> %1703, <8 x double> %1721)
  %1724 = fneg <8 x double> %1601
  %1725 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1707, <8 x double> %1723, <8 x double> %1724)
  %1726 = fmul <8 x double> %1707, %1719
  %1727 = fcmp olt <8 x double> %1726, splat (double 8.000000e-01)
  %1728 = select <8 x i1> %1727, <8 x double> %1726, <8 x double> splat (double 8.000000e-01)
  %1729 = fsub <8 x double> splat (double 1.000000e+00), %1728
  %1730 = fdiv <8 x double> %1725, %1729
  %1731 = fadd <8 x double> %1601, %1730
  %1732 = getelementptr inbounds nuw i8, ptr %1557, i64 1152
  %1733 = load <8 x double>, ptr %1732, align 64, !tbaa !26, !noalias !83
  %1734 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1722, <8 x double> %1703, <8 x double> %1733)
  %1735 = fmul <8 x double> %1707, %1734
  %1736 = fcmp olt <8 x double> %1731, %1735
  %1737 = select <8 x i1> %1736, <8 x double> %1731, <8 x double> %1735
  %1738 = select <8 x i1> %1600, <8 x double> %1737, <8 x double> %1598
  %1739 = select <8 x i1> %1550, <8 x double> %1599, <8 x double> %1738
  store <8 x double> %1739, ptr %1586, align 64, !tbaa !26
  br label %1740

1740:                                             ; preds = %1558, %1696
  %1741 = phi <8 x double> [ %1584, %1558 ], [ %1615, %1696 ]
  %1742 = phi <8 x double> [ %1583, %1558 ], [ %1612, %1696 ]
  %1743 = phi <8 x double> [ %1582, %1558 ], [ %1591, %1696 ]
  %1744 = phi <8 x double> [ %1581, %1558 ], [ %1672, %1696 ]
  %1745 = phi <8 x double> [ %1579, %1558 ], [ %1631, %1696 ]
  %1746 = phi <8 x double> [ %1575, %1558 ], [ %1611, %1696 ]
  %1747 = phi <8 x double> [ %1572, %1558 ], [ %1606, %1696 ]
  %1748 = phi <8 x i64> [ %1570, %1558 ], [ %1608, %1696 ]
  %1749 = phi <8 x double> [ %1568, %1558 ], [ %1641, %1696 ]
  %1750 = phi <8 x double> [ %1566, %1558 ], [ %1635, %1696 ]
  %1751 = phi <8 x i64> [ %1560, %1558 ], [ %1597, %1696 ]
  %1752 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %1753 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %1754 = icmp eq <8 x i64> %1751, zeroinitializer
  %1755 = select <8 x i1> %1754, <8 x double> %1753, <8 x double> %1752
  %1756 = getelementptr inbounds nuw i8, ptr %1557, i64 5888
  store <8 x double> %1755, ptr %1756, align 64, !tbaa !26
  %1757 = fcmp ogt <8 x double> %1743, zeroinitializer
  %1758 = select <8 x i1> %1757, <8 x double> %1743, <8 x double> zeroinitializer
  %1759 = fcmp olt <8 x double> %1758, splat (double 1.000000e+00)
  %1760 = select <8 x i1> %1759, <8 x double> %1758, <8 x double> splat (double 1.000000e+00)
  %1761 = getelementptr inbounds nuw i8, ptr %1557, i64 2112
  %1762 = load <8 x double>, ptr %1761, align 64, !tbaa !26
  %1763 = fmul <8 x double> %1760, splat (double 4.180000e+03)
  %1764 = getelementptr inbounds nuw i8, ptr %1557, i64 896
  %1765 = load <8 x double>, ptr %1764, align 64, !tbaa !26
  %1766 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1763, <8 x double> %1765, <8 x double> %1762)
  %1767 = getelementptr inbounds nuw i8, ptr %1557, i64 5696
  %1768 = getelementptr inbounds nuw i8, ptr %1557, i64 4480
  %1769 = load <8 x double>, ptr %1768, align 64, !tbaa !26
  %1770 = getelementptr inbounds nuw i8, ptr %1557, i64 5760
  %1771 = getelementptr inbounds nuw i8, ptr %1557, i64 5376
  %1772 = load <8 x double>, ptr %1771, align 64, !tbaa !26
  %1773 = fmul <8 x double> %1749, %1772
  %1774 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1750, <8 x double> %1769, <8 x double> %1773)
  %1775 = getelementptr inbounds nuw i8, ptr %1557, i64 8320
  %1776 = fcmp ule <8 x double> %1762, zeroinitializer
  %1777 = getelementptr inbounds nuw i8, ptr %1557, i64 7296
  store <8 x double> %1760, ptr %1777, align 64, !tbaa !26
  %1778 = fsub <8 x double> splat (double 1.000000e+00), %1760
  %1779 = getelementptr inbounds nuw i8, ptr %1557, i64 2944
  %1780 = icmp eq <8 x i64> %1748, zeroinitializer
  %1781 = select <8 x i1> %1780, <8 x double> zeroinitializer, <8 x double> %1741
  %1782 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1778, <8 x double> %1747, <8 x double> %1781)
  %1783 = getelementptr inbounds nuw i8, ptr %1557, i64 8256
  store <8 x double> %1782, ptr %1783, align 64, !tbaa !26
  %1784 = getelementptr inbounds nuw i8, ptr %1557, i64 5632
  %1785 = fmul <8 x double> %1766, %1745
  %1786 = icmp eq <8 x i64> %1748, splat (i64 -1)
  %1787 = select <8 x i1> %1776, <8 x i1> splat (i1 true), <8 x i1> %1786
  %1788 = select <8 x i1> %1787, <8 x double> zeroinitializer, <8 x double> %1785
  %1789 = getelementptr inbounds nuw i8, ptr %1557, i64 7360
  store <8 x double> %1788, ptr %1789, align 64, !tbaa !26
  %1790 = fmul <8 x double> %1766, %1774
  %1791 = select <8 x i1> %1787, <8 x double> zeroinitializer, <8 x double> %1790
  %1792 = getelementptr inbounds nuw i8, ptr %1557, i64 7424
  store <8 x double> %1791, ptr %1792, align 64, !tbaa !26
  %1793 = getelementptr inbounds nuw i8, ptr %1557, i64 7168
  store <8 x double> %1744, ptr %1793, align 64, !tbaa !26
  %1794 = getelementptr inbounds nuw i8, ptr %1557, i64 2560
  %1795 = load <8 x double>, ptr %1794, align 64, !tbaa !26
  %1796 = getelementptr inbounds nuw i8, ptr %1557, i64 2624
  %1797 = load <8 x double>, ptr %1796, align 64, !tbaa !26
  %1798 = getelementptr inbounds nuw i8, ptr %1557, i64 2688
  %1799 = load <8 x double>, ptr %1798, align 64, !tbaa !26
  %1800 = getelementptr inbounds nuw i8, ptr %1557, i64 2752
  %1801 = load <8 x double>, ptr %1800, align 64, !tbaa !26
  %1802 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1801, <8 x double> %1799)
  %1803 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1802, <8 x double> %1797)
  %1804 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1803, <8 x double> %1795)
  %1805 = getelementptr inbounds nuw i8, ptr %1557, i64 3776
  store <8 x double> %1804, ptr %1805, align 64, !tbaa !26
  %1806 = getelementptr inbounds nuw i8, ptr %1557, i64 4672
  %1807 = load <8 x double>, ptr %1806, align 64, !tbaa !26
  %1808 = fmul <8 x double> %1750, %1807
  %1809 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1745, <8 x double> %1804, <8 x double> %1808)
  %1810 = getelementptr inbounds nuw i8, ptr %1557, i64 5568
  %1811 = load <8 x double>, ptr %1810, align 64, !tbaa !26
  %1812 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1749, <8 x double> %1811, <8 x double> %1809)
  %1813 = fmul <8 x double> %1812, splat (double 5.000000e-01)
  %1814 = getelementptr inbounds nuw i8, ptr %1557, i64 7104
  store <8 x double> %1813, ptr %1814, align 64, !tbaa !26
  %1815 = getelementptr inbounds nuw i8, ptr %1557, i64 2304
  %1816 = load <8 x double>, ptr %1815, align 64, !tbaa !26
  %1817 = getelementptr inbounds nuw i8, ptr %1557, i64 2368
  %1818 = load <8 x double>, ptr %1817, align 64, !tbaa !26
  %1819 = getelementptr inbounds nuw i8, ptr %1557, i64 2432
  %1820 = load <8 x double>, ptr %1819, align 64, !tbaa !26
  %1821 = getelementptr inbounds nuw i8, ptr %1557, i64 2496
  %1822 = load <8 x double>, ptr %1821, align 64, !tbaa !26
  %1823 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1822, <8 x double> %1820)
  %1824 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1823, <8 x double> %1818)
  %1825 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1824, <8 x double> %1816)
  %1826 = getelementptr inbounds nuw i8, ptr %1557, i64 7040
  store <8 x double> %1825, ptr %1826, align 64, !tbaa !26
  %1827 = getelementptr inbounds nuw i8, ptr %1557, i64 8512
  %1828 = load i64, ptr %1827, align 64, !tbaa !31
  %1829 = icmp eq i64 %1828, 0
  br i1 %1829, label %1830, label %1839

1830:                                             ; preds = %1740
  %1831 = fdiv <8 x double> %1825, %1746
  %1832 = getelementptr inbounds nuw i8, ptr %1557, i64 6912
  store <8 x double> %1831, ptr %1832, align 64, !tbaa !26
  %1833 = load i64, ptr %141, align 16, !tbaa !21
  %1834 = getelementptr inbounds nuw i8, ptr %1557, i64 8696
  %1835 = load ptr, ptr %1834, align 8, !tbaa !36
  %1836 = getelementptr inbounds <8 x double>, ptr %1835, i64 %1833
  %1837 = load <8 x double>, ptr %1836, align 64, !tbaa !26
  %1838 = fmul <8 x double> %1831, %1837
  br label %1863

1839:                                             ; preds = %1740
  %1840 = getelementptr inbounds nuw i8, ptr %1557, i64 64
  %1841 = load <8 x double>, ptr %1840, align 64, !tbaa !26
  %1842 = fsub <8 x double> %1746, %1841
  %1843 = fdiv <8 x double> splat (double 1.000000e+00), %1842
  %1844 = getelementptr inbounds nuw i8, ptr %1557, i64 6912
  store <8 x double> %1843, ptr %1844, align 64, !tbaa !26
  %1845 = load i64, ptr %141, align 16, !tbaa !21
  %1846 = getelementptr inbounds nuw i8, ptr %1557, i64 8696
  %1847 = load ptr, ptr %1846, align 8, !tbaa !36
  %1848 = shl nsw i64 %1845, 8
  %1849 = getelementptr inbounds i8, ptr %1847, i64 %1848
  %1850 = load <8 x double>, ptr %1849, align 64, !tbaa !26
  %1851 = getelementptr inbounds nuw i8, ptr %1849, i64 64
  %1852 = load <8 x double>, ptr %1851, align 64, !tbaa !26
  %1853 = getelementptr inbounds nuw i8, ptr %1849, i64 128
  %1854 = load <8 x double>, ptr %1853, align 64, !tbaa !26
  %1855 = getelementptr inbounds nuw i8, ptr %1849, i64 192
  %1856 = load <8 x double>, ptr %1855, align 64, !tbaa !26
  %1857 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1856, <8 x double> %1854)
  %1858 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1857, <8 x double> %1852)
  %1859 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %1858, <8 x double> %1850)
  %1860 = icmp sgt i64 %1845, %1828
  %1861 = fmul <8 x double> %1843, %1859
  %1862 = select i1 %1860, <8 x double> %1861, <8 x double> %1859
  br label %1863

1863:                                             ; preds = %1830, %1839
  %1864 = phi <8 x double> [ %1831, %1830 ], [ %1843, %1839 ]
  %1865 = phi <8 x double> [ %1838, %1830 ], [ %1862, %1839 ]
  %1866 = getelementptr inbounds nuw i8, ptr %1557, i64 3200
  %1867 = load <8 x double>, ptr %1866, align 64, !tbaa !26
  %1868 = getelementptr inbounds nuw i8, ptr %1557, i64 5952
  %1869 = load <8 x double>, ptr %1868, align 64, !tbaa !26
  %1870 = fcmp ogt <8 x double> %1742, splat (double 0x3D719799812DEA11)
  %1871 = select <8 x i1> %1870, <8 x double> %1742, <8 x double> splat (double 0x3D719799812DEA11)
  %1872 = getelementptr inbounds nuw i8, ptr %1557, i64 704
  %1873 = load <8 x double>, ptr %1872, align 64, !tbaa !26
  %1874 = fdiv <8 x double> %1873, %1871
  %1875 = getelementptr inbounds nuw i8, ptr %1557, i64 6976
  store <8 x double> %1874, ptr %1875, align 64, !tbaa !26
  %1876 = getelementptr inbounds nuw i8, ptr %1557, i64 8584
  %1877 = load ptr, ptr %1876, align 8, !tbaa !60
  %1878 = load i64, ptr %141, align 16, !tbaa !21
  %1879 = getelementptr <8 x double>, ptr %1877, i64 %1878
  %1880 = getelementptr i8, ptr %1879, i64 -64
  %1881 = load <8 x double>, ptr %1880, align 64, !tbaa !26
  %1882 = fadd <8 x double> %1869, %1881
  %1883 = fmul <8 x double> %1882, splat (double 5.000000e-01)
  %1884 = getelementptr inbounds nuw i8, ptr %1557, i64 192
  %1885 = load <8 x double>, ptr %1884, align 64, !tbaa !26
  %1886 = getelementptr inbounds nuw i8, ptr %1557, i64 256
  %1887 = load <8 x double>, ptr %1886, align 64, !tbaa !26
  %1888 = getelementptr inbounds nuw i8, ptr %1557, i64 320
  %1889 = load <8 x double>, ptr %1888, align 64, !tbaa !26
  %1890 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1883, <8 x double> %1889, <8 x double> %1887)
  %1891 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1883, <8 x double> %1890, <8 x double> %1885)
  %1892 = fmul <8 x double> %1865, %1891
  %1893 = fmul <8 x double> %1760, %1892
  %1894 = getelementptr inbounds nuw i8, ptr %1557, i64 2048
  %1895 = load <8 x double>, ptr %1894, align 64, !tbaa !26
  %1896 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1893, <8 x double> %1895, <8 x double> splat (double 1.000000e+00))
  %1897 = fdiv <8 x double> splat (double 1.000000e+00), %1896
  %1898 = select <8 x i1> %1780, <8 x double> %1897, <8 x double> splat (double 1.000000e+00)
  %1899 = getelementptr inbounds nuw i8, ptr %1557, i64 7232
  store <8 x double> %1898, ptr %1899, align 64, !tbaa !26
  %1900 = fmul <8 x double> %1892, %1898
  %1901 = getelementptr inbounds nuw i8, ptr %1557, i64 6400
  store <8 x double> %1900, ptr %1901, align 64, !tbaa !26
  %1902 = fmul <8 x double> %1813, splat (double 2.000000e+00)
  %1903 = getelementptr inbounds nuw i8, ptr %1557, i64 384
  %1904 = load <8 x double>, ptr %1903, align 64, !tbaa !26
  %1905 = getelementptr inbounds nuw i8, ptr %1557, i64 448
  %1906 = load <8 x double>, ptr %1905, align 64, !tbaa !26
  %1907 = getelementptr inbounds nuw i8, ptr %1557, i64 512
  %1908 = load <8 x double>, ptr %1907, align 64, !tbaa !26
  %1909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1869, <8 x double> %1908, <8 x double> %1906)
  %1910 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1869, <8 x double> %1909, <8 x double> %1904)
  %1911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1902, <8 x double> %1910, <8 x double> %1900)
  %1912 = getelementptr inbounds nuw i8, ptr %1557, i64 6528
  store <8 x double> %1911, ptr %1912, align 64, !tbaa !26
  %1913 = fmul <8 x double> %1778, %1867
  %1914 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1913, <8 x double> %1747, <8 x double> splat (double 1.000000e+00))
  %1915 = fdiv <8 x double> %1867, %1914
  %1916 = load i64, ptr %142, align 8, !tbaa !22
  %1917 = sitofp i64 %1916 to double
  %1918 = fmul double %1917, 2.000000e+00
  %1919 = insertelement <8 x double> poison, double %1918, i64 0
  %1920 = shufflevector <8 x double> %1919, <8 x double> poison, <8 x i32> zeroinitializer
  %1921 = fmul <8 x double> %1874, %1920
  %1922 = fadd <8 x double> %1915, %1921
  %1923 = fdiv <8 x double> %1915, %1922
  %1924 = fmul <8 x double> %1825, %1921
  %1925 = select <8 x i1> %1780, <8 x double> %1915, <8 x double> %1924
  %1926 = getelementptr inbounds nuw i8, ptr %1557, i64 6464
  store <8 x double> %1925, ptr %1926, align 64, !tbaa !26
  %1927 = fmul <8 x double> %1921, %1923
  %1928 = select <8 x i1> %1780, <8 x double> %1915, <8 x double> %1927
  %1929 = getelementptr inbounds nuw i8, ptr %1557, i64 6592
  store <8 x double> %1928, ptr %1929, align 64, !tbaa !26
  %1930 = select <8 x i1> %1780, <8 x double> splat (double 1.000000e+00), <8 x double> %1923
  %1931 = getelementptr inbounds nuw i8, ptr %1557, i64 6656
  store <8 x double> %1930, ptr %1931, align 64, !tbaa !26
  br i1 %1829, label %2096, label %1932

1932:                                             ; preds = %1863
  %1933 = getelementptr inbounds nuw i8, ptr %1557, i64 576
  %1934 = load <8 x double>, ptr %1933, align 64, !tbaa !26
  %1935 = getelementptr inbounds nuw i8, ptr %1557, i64 640
  %1936 = load <8 x double>, ptr %1935, align 64, !tbaa !26
  %1937 = getelementptr inbounds nuw i8, ptr %1557, i64 1536
  %1938 = load <8 x double>, ptr %1937, align 64, !tbaa !26
  %1939 = load i64, ptr %141, align 16, !tbaa !21
  %1940 = fsub <8 x double> %1804, %1938
  %1941 = fmul <8 x double> %1906, splat (double 5.000000e-01)
  %1942 = fmul <8 x double> %1908, splat (double 0x3FE5555555555555)
  %1943 = getelementptr inbounds nuw i8, ptr %1557, i64 8672
  %1944 = load ptr, ptr %1943, align 32, !tbaa !75
  %1945 = getelementptr inbounds nuw i8, ptr %1557, i64 8680
  %1946 = load ptr, ptr %1945, align 8, !tbaa !51
  %1947 = getelementptr inbounds nuw i8, ptr %1557, i64 8608
  %1948 = load ptr, ptr %1947, align 32, !tbaa !61
  %1949 = getelementptr inbounds nuw i8, ptr %1557, i64 8648
  %1950 = load ptr, ptr %1949, align 8, !tbaa !86
  %1951 = getelementptr inbounds nuw i8, ptr %1557, i64 8656
  %1952 = load ptr, ptr %1951, align 16, !tbaa !87
  %1953 = getelementptr inbounds nuw i8, ptr %1557, i64 8664
  %1954 = load ptr, ptr %1953, align 8, !tbaa !88
  %1955 = getelementptr inbounds nuw i8, ptr %1557, i64 8632
  %1956 = load ptr, ptr %1955, align 8, !tbaa !89
  %1957 = getelementptr inbounds nuw i8, ptr %1557, i64 8640
  %1958 = load ptr, ptr %1957, align 64, !tbaa !90
  %1959 = icmp sgt i64 %1939, 0
  br i1 %1959, label %1960, label %2208

1960:                                             ; preds = %1932
  %1961 = load <8 x double>, ptr %1877, align 64, !tbaa !26
  %1962 = getelementptr inbounds nuw i8, ptr %1557, i64 2880
  %1963 = load <8 x double>, ptr %1962, align 64, !tbaa !26
  %1964 = getelementptr inbounds nuw i8, ptr %1557, i64 2816
  %1965 = load <8 x double>, ptr %1964, align 64, !tbaa !26
  %1966 = getelementptr inbounds nuw i8, ptr %1557, i64 64
  %1967 = load <8 x double>, ptr %1966, align 64, !tbaa !26
  %1968 = fmul <8 x double> %1813, splat (double -2.000000e+00)
  %1969 = fmul <8 x double> %1968, %1869
  %1970 = fmul <8 x double> %1869, %1969
  %1971 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1869, <8 x double> %1942, <8 x double> %1941)
  %1972 = fmul <8 x double> %1970, %1971
  %1973 = getelementptr inbounds nuw i8, ptr %1557, i64 8696
  %1974 = fsub <8 x double> %1746, %1967
  %1975 = fmul <8 x double> %1974, %1963
  %1976 = fdiv <8 x double> %1965, %1934
  br label %1977

1977:                                             ; preds = %1960, %2061
  %1978 = phi <8 x double> [ %1961, %1960 ], [ %2065, %2061 ]
  %1979 = phi <8 x double> [ zeroinitializer, %1960 ], [ %2062, %2061 ]
  %1980 = phi <8 x double> [ zeroinitializer, %1960 ], [ %2063, %2061 ]
  %1981 = phi <8 x double> [ zeroinitializer, %1960 ], [ %2064, %2061 ]
  %1982 = phi <8 x double> [ zeroinitializer, %1960 ], [ %2091, %2061 ]
  %1983 = phi <8 x double> [ zeroinitializer, %1960 ], [ %2093, %2061 ]
  %1984 = phi <8 x double> [ %1936, %1960 ], [ %2066, %2061 ]
  %1985 = phi i64 [ 0, %1960 ], [ %1987, %2061 ]
  %1986 = phi <8 x double> [ zeroinitializer, %1960 ], [ %2067, %2061 ]
  %1987 = add nuw nsw i64 %1985, 1
  %1988 = icmp slt i64 %1987, %1939
  br i1 %1988, label %1989, label %2058

1989:                                             ; preds = %1977
  %1990 = getelementptr inbounds nuw <8 x double>, ptr %1877, i64 %1987
  %1991 = load <8 x double>, ptr %1990, align 64, !tbaa !26
  %1992 = icmp slt i64 %1987, %1828
  br i1 %1992, label %2000, label %1993

1993:                                             ; preds = %1989
  %1994 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1991, <8 x double> %1908, <8 x double> %1906)
  %1995 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1991, <8 x double> %1994, <8 x double> %1904)
  %1996 = fneg <8 x double> %1991
  %1997 = fmul <8 x double> %1991, %1996
  %1998 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1991, <8 x double> %1942, <8 x double> %1941)
  %1999 = fmul <8 x double> %1997, %1998
  br label %2000

2000:                                             ; preds = %1989, %1993
  %2001 = phi <8 x double> [ %1995, %1993 ], [ %1936, %1989 ]
  %2002 = phi <8 x double> [ %1999, %1993 ], [ zeroinitializer, %1989 ]
  %2003 = load i64, ptr %1827, align 64, !tbaa !31
  %2004 = icmp eq i64 %2003, 0
  %2005 = load ptr, ptr %1973, align 8, !tbaa !36
  br i1 %2004, label %2006, label %2010

2006:                                             ; preds = %2000
  %2007 = getelementptr inbounds nuw <8 x double>, ptr %2005, i64 %1987
  %2008 = load <8 x double>, ptr %2007, align 64, !tbaa !26
  %2009 = fmul <8 x double> %1864, %2008
  br label %2026

2010:                                             ; preds = %2000
  %2011 = shl nsw i64 %1987, 8
  %2012 = getelementptr inbounds nuw i8, ptr %2005, i64 %2011
  %2013 = load <8 x double>, ptr %2012, align 64, !tbaa !26
  %2014 = getelementptr inbounds nuw i8, ptr %2012, i64 64
  %2015 = load <8 x double>, ptr %2014, align 64, !tbaa !26
  %2016 = getelementptr inbounds nuw i8, ptr %2012, i64 128
  %2017 = load <8 x double>, ptr %2016, align 64, !tbaa !26
  %2018 = getelementptr inbounds nuw i8, ptr %2012, i64 192
  %2019 = load <8 x double>, ptr %2018, align 64, !tbaa !26
  %2020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %2019, <8 x double> %2017)
  %2021 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %2020, <8 x double> %2015)
  %2022 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1746, <8 x double> %2021, <8 x double> %2013)
  %2023 = icmp slt i64 %1985, %2003
  %2024 = fmul <8 x double> %1864, %2022
  %2025 = select i1 %2023, <8 x double> %2022, <8 x double> %2024
  br label %2026

2026:                                             ; preds = %2010, %2006
  %2027 = phi <8 x double> [ %2009, %2006 ], [ %2025, %2010 ]
  %2028 = icmp slt i64 %1985, %2003
  br i1 %2028, label %2035, label %2029

2029:                                             ; preds = %2026
  %2030 = fadd <8 x double> %1978, %1991
  %2031 = fmul <8 x double> %2030, splat (double 5.000000e-01)
  %2032 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2031, <8 x double> %1889, <8 x double> %1887)
  %2033 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2031, <8 x double> %2032, <8 x double> %1885)
  %2034 = fmul <8 x double> %2033, %2027
  br label %2045

2035:                                             ; preds = %2026
  %2036 = icmp slt i64 %1987, %2003
  br i1 %2036, label %2037, label %2039

2037:                                             ; preds = %2035
  %2038 = fmul <8 x double> %1934, %2027
  br label %2045

2039:                                             ; preds = %2035
  %2040 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1991, <8 x double> %1889, <8 x double> %1887)
  %2041 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1991, <8 x double> %2040, <8 x double> %1885)
  %2042 = fdiv <8 x double> %1975, %2041
  %2043 = fadd <8 x double> %1976, %2042
  %2044 = fdiv <8 x double> %2027, %2043
  br label %2045

2045:                                             ; preds = %2029, %2037, %2039
  %2046 = phi <8 x double> [ %2034, %2029 ], [ %2038, %2037 ], [ %2044, %2039 ]
  br i1 %1992, label %2051, label %2047

2047:                                             ; preds = %2045
  %2048 = getelementptr inbounds nuw <8 x double>, ptr %1944, i64 %1987
  %2049 = load <8 x double>, ptr %2048, align 64, !tbaa !26
  %2050 = fmul <8 x double> %1813, %2049
  br label %2051

2051:                                             ; preds = %2045, %2047
  %2052 = phi <8 x double> [ %2050, %2047 ], [ zeroinitializer, %2045 ]
  %2053 = fneg <8 x double> %2052
  %2054 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2053, <8 x double> %1984, <8 x double> %2046)
  %2055 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2052, <8 x double> %2001, <8 x double> %2046)
  %2056 = fadd <8 x double> %1986, %2002
  %2057 = fmul <8 x double> %2056, %2052
  br label %2061

2058:                                             ; preds = %1977
  %2059 = load <8 x double>, ptr %1901, align 64, !tbaa !26
  %2060 = load <8 x double>, ptr %1912, align 64, !tbaa !26
  br label %2061

2061:                                             ; preds = %2058, %2051
  %2062 = phi <8 x double> [ %2054, %2051 ], [ %2059, %2058 ]
  %2063 = phi <8 x double> [ %2055, %2051 ], [ %2060, %2058 ]
  %2064 = phi <8 x double> [ %2057, %2051 ], [ %1972, %2058 ]
  %2065 = phi <8 x double> [ %1991, %2051 ], [ %1978, %2058 ]
  %2066 = phi <8 x double> [ %2001, %2051 ], [ %1984, %2058 ]
  %2067 = phi <8 x double> [ %2002, %2051 ], [ %1986, %2058 ]
  %2068 = getelementptr inbounds nuw <8 x double>, ptr %1946, i64 %1985
  %2069 = load <8 x double>, ptr %2068, align 64, !tbaa !26
  %2070 = icmp slt i64 %1985, %1828
  %2071 = select i1 %2070, <8 x double> %1938, <8 x double> %1940
  %2072 = fmul <8 x double> %1745, %2071
  %2073 = fmul <8 x double> %2072, %2069
  %2074 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2073, <8 x double> %1984, <8 x double> %2062)
  %2075 = fadd <8 x double> %1980, %2074
  %2076 = fsub <8 x double> %2064, %1981
  %2077 = fneg <8 x double> %2073
  %2078 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2077, <8 x double> %1986, <8 x double> %2076)
  %2079 = getelementptr inbounds nuw <8 x double>, ptr %1948, i64 %1985
  %2080 = load <8 x double>, ptr %2079, align 64, !tbaa !26
  %2081 = fsub <8 x double> %2078, %2080
  %2082 = fneg <8 x double> %1979
  %2083 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2082, <8 x double> %1983, <8 x double> %2075)
  %2084 = fdiv <8 x double> splat (double 1.000000e+00), %2083
  %2085 = getelementptr inbounds nuw <8 x double>, ptr %1950, i64 %1985
  store <8 x double> %2081, ptr %2085, align 64, !tbaa !26
  %2086 = getelementptr inbounds nuw <8 x double>, ptr %1952, i64 %1985
  store <8 x double> %1979, ptr %2086, align 64, !tbaa !26
  %2087 = fadd <8 x double> %1979, %2063
  %2088 = fsub <8 x double> %2087, %2075
  %2089 = getelementptr inbounds nuw <8 x double>, ptr %1954, i64 %1985
  store <8 x double> %2088, ptr %2089, align 64, !tbaa !26
  %2090 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1979, <8 x double> %1982, <8 x double> %2081)
  %2091 = fmul <8 x double> %2090, %2084
  %2092 = getelementptr inbounds nuw <8 x double>, ptr %1956, i64 %1985
  store <8 x double> %2091, ptr %2092, align 64, !tbaa !26
  %2093 = fmul <8 x double> %2063, %2084
  %2094 = getelementptr inbounds nuw <8 x double>, ptr %1958, i64 %1985
  store <8 x double> %2093, ptr %2094, align 64, !tbaa !26
  %2095 = icmp eq i64 %1987, %1939
  br i1 %2095, label %2208, label %1977, !llvm.loop !91

2096:                                             ; preds = %1863
  %2097 = getelementptr inbounds nuw i8, ptr %1557, i64 1536
  %2098 = load <8 x double>, ptr %2097, align 64, !tbaa !26
  %2099 = load i64, ptr %141, align 16, !tbaa !21
  %2100 = fsub <8 x double> %1804, %2098
  %2101 = fmul <8 x double> %1745, %2100
  %2102 = fmul <8 x double> %1906, splat (double 5.000000e-01)
  %2103 = fmul <8 x double> %1908, splat (double 0x3FE5555555555555)
  %2104 = getelementptr inbounds nuw i8, ptr %1557, i64 8672
  %2105 = load ptr, ptr %2104, align 32, !tbaa !75
  %2106 = getelementptr inbounds nuw i8, ptr %1557, i64 8680
  %2107 = load ptr, ptr %2106, align 8, !tbaa !51
  %2108 = getelementptr inbounds nuw i8, ptr %1557, i64 8608
  %2109 = load ptr, ptr %2108, align 32, !tbaa !61
  %2110 = getelementptr inbounds nuw i8, ptr %1557, i64 8648
  %2111 = load ptr, ptr %2110, align 8, !tbaa !86
  %2112 = getelementptr inbounds nuw i8, ptr %1557, i64 8656
  %2113 = load ptr, ptr %2112, align 16, !tbaa !87
  %2114 = getelementptr inbounds nuw i8, ptr %1557, i64 8664
  %2115 = load ptr, ptr %2114, align 8, !tbaa !88
  %2116 = getelementptr inbounds nuw i8, ptr %1557, i64 8632
  %2117 = load ptr, ptr %2116, align 8, !tbaa !89
  %2118 = getelementptr inbounds nuw i8, ptr %1557, i64 8640
  %2119 = load ptr, ptr %2118, align 64, !tbaa !90
  %2120 = icmp sgt i64 %2099, 0
  br i1 %2120, label %2121, label %2208

2121:                                             ; preds = %2096
  %2122 = load <8 x double>, ptr %1877, align 64, !tbaa !26
  %2123 = fneg <8 x double> %2122
  %2124 = fmul <8 x double> %2122, %2123
  %2125 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2122, <8 x double> %2103, <8 x double> %2102)
  %2126 = fmul <8 x double> %2124, %2125
  %2127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2122, <8 x double> %1908, <8 x double> %1906)
  %2128 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2122, <8 x double> %2127, <8 x double> %1904)
  %2129 = fmul <8 x double> %1813, splat (double -2.000000e+00)
  %2130 = fmul <8 x double> %2129, %1869
  %2131 = fmul <8 x double> %1869, %2130
  %2132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1869, <8 x double> %2103, <8 x double> %2102)
  %2133 = fmul <8 x double> %2131, %2132
  %2134 = getelementptr inbounds nuw i8, ptr %1557, i64 8696
  br label %2135

2135:                                             ; preds = %2121, %2176
  %2136 = phi <8 x double> [ %2122, %2121 ], [ %2180, %2176 ]
  %2137 = phi <8 x double> [ zeroinitializer, %2121 ], [ %2177, %2176 ]
  %2138 = phi <8 x double> [ zeroinitializer, %2121 ], [ %2178, %2176 ]
  %2139 = phi <8 x double> [ zeroinitializer, %2121 ], [ %2179, %2176 ]
  %2140 = phi <8 x double> [ zeroinitializer, %2121 ], [ %2203, %2176 ]
  %2141 = phi <8 x double> [ zeroinitializer, %2121 ], [ %2205, %2176 ]
  %2142 = phi <8 x double> [ %2128, %2121 ], [ %2181, %2176 ]
  %2143 = phi i64 [ 0, %2121 ], [ %2145, %2176 ]
  %2144 = phi <8 x double> [ %2126, %2121 ], [ %2182, %2176 ]
  %2145 = add nuw nsw i64 %2143, 1
  %2146 = icmp slt i64 %2145, %2099
  br i1 %2146, label %2147, label %2173

2147:                                             ; preds = %2135
  %2148 = getelementptr inbounds nuw <8 x double>, ptr %1877, i64 %2145
  %2149 = load <8 x double>, ptr %2148, align 64, !tbaa !26
  %2150 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2149, <8 x double> %1908, <8 x double> %1906)
  %2151 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2149, <8 x double> %2150, <8 x double> %1904)
  %2152 = fneg <8 x double> %2149
  %2153 = fmul <8 x double> %2149, %2152
  %2154 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2149, <8 x double> %2103, <8 x double> %2102)
  %2155 = fmul <8 x double> %2153, %2154
  %2156 = fadd <8 x double> %2136, %2149
  %2157 = fmul <8 x double> %2156, splat (double 5.000000e-01)
  %2158 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2157, <8 x double> %1889, <8 x double> %1887)
  %2159 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2157, <8 x double> %2158, <8 x double> %1885)
  %2160 = load ptr, ptr %2134, align 8, !tbaa !36
  %2161 = getelementptr inbounds nuw <8 x double>, ptr %2160, i64 %2145
  %2162 = load <8 x double>, ptr %2161, align 64, !tbaa !26
  %2163 = fmul <8 x double> %1864, %2162
  %2164 = fmul <8 x double> %2163, %2159
  %2165 = getelementptr inbounds nuw <8 x double>, ptr %2105, i64 %2145
  %2166 = load <8 x double>, ptr %2165, align 64, !tbaa !26
  %2167 = fmul <8 x double> %1813, %2166
  %2168 = fneg <8 x double> %2167
  %2169 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2168, <8 x double> %2142, <8 x double> %2164)
  %2170 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2167, <8 x double> %2151, <8 x double> %2164)
  %2171 = fadd <8 x double> %2144, %2155
  %2172 = fmul <8 x double> %2171, %2167
  br label %2176

2173:                                             ; preds = %2135
  %2174 = load <8 x double>, ptr %1901, align 64, !tbaa !26
  %2175 = load <8 x double>, ptr %1912, align 64, !tbaa !26
  br label %2176

2176:                                             ; preds = %2173, %2147
  %2177 = phi <8 x double> [ %2169, %2147 ], [ %2174, %2173 ]
  %2178 = phi <8 x double> [ %2170, %2147 ], [ %2175, %2173 ]
  %2179 = phi <8 x double> [ %2172, %2147 ], [ %2133, %2173 ]
  %2180 = phi <8 x double> [ %2149, %2147 ], [ %2136, %2173 ]
  %2181 = phi <8 x double> [ %2151, %2147 ], [ %2142, %2173 ]
  %2182 = phi <8 x double> [ %2155, %2147 ], [ %2144, %2173 ]
  %2183 = getelementptr inbounds nuw <8 x double>, ptr %2107, i64 %2143
  %2184 = load <8 x double>, ptr %2183, align 64, !tbaa !26
  %2185 = fmul <8 x double> %2101, %2184
  %2186 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2185, <8 x double> %2142, <8 x double> %2177)
  %2187 = fadd <8 x double> %2138, %2186
  %2188 = fsub <8 x double> %2179, %2139
  %2189 = fneg <8 x double> %2185
  %2190 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2189, <8 x double> %2144, <8 x double> %2188)
  %2191 = getelementptr inbounds nuw <8 x double>, ptr %2109, i64 %2143
  %2192 = load <8 x double>, ptr %2191, align 64, !tbaa !26
  %2193 = fsub <8 x double> %2190, %2192
  %2194 = fneg <8 x double> %2137
  %2195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2194, <8 x double> %2141, <8 x double> %2187)
  %2196 = fdiv <8 x double> splat (double 1.000000e+00), %2195
  %2197 = getelementptr inbounds nuw <8 x double>, ptr %2111, i64 %2143
  store <8 x double> %2193, ptr %2197, align 64, !tbaa !26
  %2198 = getelementptr inbounds nuw <8 x double>, ptr %2113, i64 %2143
  store <8 x double> %2137, ptr %2198, align 64, !tbaa !26
  %2199 = fadd <8 x double> %2137, %2178
  %2200 = fsub <8 x double> %2199, %2187
  %2201 = getelementptr inbounds nuw <8 x double>, ptr %2115, i64 %2143
  store <8 x double> %2200, ptr %2201, align 64, !tbaa !26
  %2202 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2137, <8 x double> %2140, <8 x double> %2193)
  %2203 = fmul <8 x double> %2202, %2196
  %2204 = getelementptr inbounds nuw <8 x double>, ptr %2117, i64 %2143
  store <8 x double> %2203, ptr %2204, align 64, !tbaa !26
  %2205 = fmul <8 x double> %2178, %2196
  %2206 = getelementptr inbounds nuw <8 x double>, ptr %2119, i64 %2143
  store <8 x double> %2205, ptr %2206, align 64, !tbaa !26
  %2207 = icmp eq i64 %2145, %2099
  br i1 %2207, label %2208, label %2135, !llvm.loop !92

2208:                                             ; preds = %2061, %2176, %1932, %2096
  %2209 = getelementptr inbounds nuw i8, ptr %1557, i64 8128
  store <8 x double> splat (double 1.000000e+09), ptr %2209, align 64, !tbaa !26
  %2210 = getelementptr inbounds nuw i8, ptr %1557, i64 8632
  %2211 = load ptr, ptr %2210, align 8, !tbaa !89
  %2212 = load i64, ptr %141, align 16, !tbaa !21
  %2213 = add nsw i64 %2212, -1
  %2214 = getelementptr inbounds <8 x double>, ptr %2211, i64 %2213
  %2215 = load <8 x double>, ptr %2214, align 64, !tbaa !26
  %2216 = getelementptr inbounds nuw i8, ptr %1557, i64 8640
  %2217 = load ptr, ptr %2216, align 64, !tbaa !90
  %2218 = getelementptr inbounds <8 x double>, ptr %2217, i64 %2213
  %2219 = load <8 x double>, ptr %2218, align 64, !tbaa !26
  %2220 = load <8 x double>, ptr %1901, align 64, !tbaa !26
  %2221 = fmul <8 x double> %2215, %2220
  %2222 = fsub <8 x double> splat (double 1.000000e+00), %2219
  %2223 = fmul <8 x double> %2220, %2222
  %2224 = load <8 x double>, ptr %1926, align 64, !tbaa !26
  %2225 = load <8 x double>, ptr %1756, align 64, !tbaa !26
  %2226 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2224, <8 x double> %2225, <8 x double> %2221)
  %2227 = load <8 x double>, ptr %1792, align 64, !tbaa !26
  %2228 = fsub <8 x double> %2226, %2227
  %2229 = fadd <8 x double> %2223, %2224
  %2230 = load <8 x double>, ptr %1789, align 64, !tbaa !26
  %2231 = fadd <8 x double> %2229, %2230
  %2232 = load <8 x i64>, ptr %1775, align 64, !tbaa !26
  %2233 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2232)
  %2234 = icmp eq i64 %2233, 0
  %2235 = load i64, ptr %142, align 8, !tbaa !22
  br i1 %2234, label %2236, label %2251

2236:                                             ; preds = %2208
  %2237 = icmp slt i64 %2235, 0
  br i1 %2237, label %2242, label %2238

2238:                                             ; preds = %2236
  %2239 = getelementptr inbounds nuw i8, ptr %1557, i64 1408
  %2240 = getelementptr inbounds nuw i8, ptr %1557, i64 8752
  %2241 = load <8 x double>, ptr %2239, align 64, !tbaa !26
  br label %2244

2242:                                             ; preds = %2244, %2236
  %2243 = getelementptr inbounds nuw i8, ptr %1557, i64 6208
  store <8 x double> %2228, ptr %2243, align 64, !tbaa !26
  br label %2378

2244:                                             ; preds = %2238, %2244
  %2245 = phi i64 [ 0, %2238 ], [ %2248, %2244 ]
  %2246 = load ptr, ptr %2240, align 16, !tbaa !93
  %2247 = getelementptr inbounds nuw <8 x double>, ptr %2246, i64 %2245
  store <8 x double> %2241, ptr %2247, align 64, !tbaa !26
  %2248 = add nuw nsw i64 %2245, 1
  %2249 = load i64, ptr %142, align 8, !tbaa !22
  %2250 = icmp slt i64 %2245, %2249
  br i1 %2250, label %2244, label %2242, !llvm.loop !94

2251:                                             ; preds = %2208
  %2252 = load <8 x double>, ptr %1779, align 64, !tbaa !26
  %2253 = load <8 x double>, ptr %1793, align 64, !tbaa !26
  %2254 = getelementptr inbounds nuw i8, ptr %1557, i64 1280
  %2255 = load <8 x double>, ptr %2254, align 64, !tbaa !26
  %2256 = fmul <8 x double> %2253, %2255
  %2257 = load <8 x double>, ptr %1557, align 64, !tbaa !26
  %2258 = fsub <8 x double> %2257, %2252
  %2259 = sitofp i64 %2235 to double
  %2260 = insertelement <8 x double> poison, double %2259, i64 0
  %2261 = shufflevector <8 x double> %2260, <8 x double> poison, <8 x i32> zeroinitializer
  %2262 = fdiv <8 x double> %2258, %2261
  %2263 = load <8 x double>, ptr %1929, align 64, !tbaa !26
  %2264 = load <8 x double>, ptr %1931, align 64, !tbaa !26
  %2265 = getelementptr inbounds nuw i8, ptr %1557, i64 1408
  %2266 = load <8 x double>, ptr %2265, align 64, !tbaa !26
  %2267 = getelementptr inbounds nuw i8, ptr %1557, i64 8752
  %2268 = load ptr, ptr %2267, align 16, !tbaa !93
  %2269 = getelementptr inbounds <8 x double>, ptr %2268, i64 %2235
  store <8 x double> %2266, ptr %2269, align 64, !tbaa !26
  %2270 = icmp sgt i64 %2235, 0
  br i1 %2270, label %2271, label %2362

2271:                                             ; preds = %2251
  %2272 = fneg <8 x double> %2256
  %2273 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2272, <8 x double> %2264, <8 x double> %2263)
  %2274 = fsub <8 x double> splat (double 1.000000e+00), %2264
  %2275 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2256, <8 x double> %2274, <8 x double> %2263)
  %2276 = getelementptr inbounds nuw i8, ptr %1557, i64 8760
  %2277 = getelementptr inbounds nuw i8, ptr %1557, i64 8768
  %2278 = getelementptr inbounds nuw i8, ptr %1557, i64 768
  %2279 = fmul <8 x double> %2256, splat (double -5.000000e-01)
  %2280 = getelementptr inbounds nuw i8, ptr %1557, i64 8728
  %2281 = getelementptr inbounds nuw i8, ptr %1557, i64 8736
  %2282 = getelementptr inbounds nuw i8, ptr %1557, i64 8744
  br label %2283

2283:                                             ; preds = %2271, %2337
  %2284 = phi <8 x double> [ %2275, %2271 ], [ %2339, %2337 ]
  %2285 = phi <8 x double> [ %2273, %2271 ], [ %2340, %2337 ]
  %2286 = phi <8 x double> [ %2225, %2271 ], [ %2355, %2337 ]
  %2287 = phi <8 x double> [ zeroinitializer, %2271 ], [ %2358, %2337 ]
  %2288 = phi <8 x double> [ %2266, %2271 ], [ %2301, %2337 ]
  %2289 = phi i64 [ %2235, %2271 ], [ %2290, %2337 ]
  %2290 = add nsw i64 %2289, -1
  %2291 = uitofp nneg i64 %2290 to double
  %2292 = insertelement <8 x double> poison, double %2291, i64 0
  %2293 = shufflevector <8 x double> %2292, <8 x double> poison, <8 x i32> zeroinitializer
  %2294 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2293, <8 x double> %2262, <8 x double> %2252)
  %2295 = load <8 x double>, ptr %1794, align 64, !tbaa !26
  %2296 = load <8 x double>, ptr %1796, align 64, !tbaa !26
  %2297 = load <8 x double>, ptr %1798, align 64, !tbaa !26
  %2298 = load <8 x double>, ptr %1800, align 64, !tbaa !26
  %2299 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2294, <8 x double> %2298, <8 x double> %2297)
  %2300 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2294, <8 x double> %2299, <8 x double> %2296)
  %2301 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2294, <8 x double> %2300, <8 x double> %2295)
  %2302 = load <8 x double>, ptr %1784, align 64, !tbaa !26
  %2303 = load <8 x double>, ptr %1767, align 64, !tbaa !26
  %2304 = load ptr, ptr %2276, align 8, !tbaa !52
  %2305 = getelementptr inbounds nuw <8 x double>, ptr %2304, i64 %2290
  %2306 = load <8 x double>, ptr %2305, align 64, !tbaa !26
  %2307 = fmul <8 x double> %2303, %2306
  %2308 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2302, <8 x double> %2301, <8 x double> %2307)
  %2309 = load <8 x double>, ptr %1770, align 64, !tbaa !26
  %2310 = load ptr, ptr %2277, align 64, !tbaa !62
  %2311 = getelementptr inbounds nuw <8 x double>, ptr %2310, i64 %2290
  %2312 = load <8 x double>, ptr %2311, align 64, !tbaa !26
  %2313 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2309, <8 x double> %2312, <8 x double> %2308)
  %2314 = fmul <8 x double> %2313, splat (double 5.000000e-01)
  %2315 = icmp eq i64 %2289, 1
  br i1 %2315, label %2331, label %2316

2316:                                             ; preds = %2283
  %2317 = load <8 x double>, ptr %2278, align 64, !tbaa !26
  %2318 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2314, <8 x double> %2317, <8 x double> %2279)
  %2319 = load <8 x double>, ptr %1875, align 64, !tbaa !26
  %2320 = fmul <8 x double> %2261, %2319
  %2321 = load <8 x double>, ptr %1815, align 64, !tbaa !26
  %2322 = load <8 x double>, ptr %1817, align 64, !tbaa !26
  %2323 = load <8 x double>, ptr %1819, align 64, !tbaa !26
  %2324 = load <8 x double>, ptr %1821, align 64, !tbaa !26
  %2325 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2294, <8 x double> %2324, <8 x double> %2323)
  %2326 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2294, <8 x double> %2325, <8 x double> %2322)
  %2327 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2294, <8 x double> %2326, <8 x double> %2321)
  %2328 = fmul <8 x double> %2320, %2327
  %2329 = fsub <8 x double> %2328, %2318
  %2330 = fadd <8 x double> %2318, %2328
  br label %2337

2331:                                             ; preds = %2283
  %2332 = load <8 x double>, ptr %1926, align 64, !tbaa !26
  %2333 = load <8 x double>, ptr %2278, align 64, !tbaa !26
  %2334 = fmul <8 x double> %2314, splat (double -2.000000e+00)
  %2335 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2334, <8 x double> %2333, <8 x double> %2332)
  %2336 = fadd <8 x double> %2256, %2335
  br label %2337

2337:                                             ; preds = %2331, %2316
  %2338 = phi <8 x double> [ %2317, %2316 ], [ %2333, %2331 ]
  %2339 = phi <8 x double> [ %2329, %2316 ], [ %2336, %2331 ]
  %2340 = phi <8 x double> [ %2330, %2316 ], [ %2332, %2331 ]
  %2341 = fsub <8 x double> %2288, %2301
  %2342 = fmul <8 x double> %2302, %2341
  %2343 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2342, <8 x double> %2338, <8 x double> %2284)
  %2344 = fadd <8 x double> %2340, %2343
  %2345 = fneg <8 x double> %2285
  %2346 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2345, <8 x double> %2287, <8 x double> %2344)
  %2347 = fdiv <8 x double> splat (double 1.000000e+00), %2346
  %2348 = load ptr, ptr %2267, align 16, !tbaa !93
  %2349 = getelementptr inbounds nuw <8 x double>, ptr %2348, i64 %2290
  store <8 x double> %2301, ptr %2349, align 64, !tbaa !26
  %2350 = load ptr, ptr %2280, align 8, !tbaa !65
  %2351 = getelementptr inbounds nuw <8 x double>, ptr %2350, i64 %2290
  %2352 = load <8 x double>, ptr %2351, align 64, !tbaa !26
  %2353 = fneg <8 x double> %2352
  %2354 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2285, <8 x double> %2286, <8 x double> %2353)
  %2355 = fmul <8 x double> %2347, %2354
  %2356 = load ptr, ptr %2281, align 32, !tbaa !95
  %2357 = getelementptr inbounds nuw <8 x double>, ptr %2356, i64 %2290
  store <8 x double> %2355, ptr %2357, align 64, !tbaa !26
  %2358 = fmul <8 x double> %2339, %2347
  %2359 = load ptr, ptr %2282, align 8, !tbaa !96
  %2360 = getelementptr inbounds nuw <8 x double>, ptr %2359, i64 %2290
  store <8 x double> %2358, ptr %2360, align 64, !tbaa !26
  %2361 = icmp samesign ugt i64 %2289, 1
  br i1 %2361, label %2283, label %2362, !llvm.loop !97

2362:                                             ; preds = %2337, %2251
  %2363 = load <8 x i64>, ptr %1775, align 64, !tbaa !26
  %2364 = load <8 x double>, ptr %1926, align 64, !tbaa !26
  %2365 = getelementptr inbounds nuw i8, ptr %1557, i64 8736
  %2366 = load ptr, ptr %2365, align 32, !tbaa !95
  %2367 = load <8 x double>, ptr %2366, align 64, !tbaa !26
  %2368 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2364, <8 x double> %2367, <8 x double> %2221)
  %2369 = icmp eq <8 x i64> %2363, zeroinitializer
  %2370 = select <8 x i1> %2369, <8 x double> %2228, <8 x double> %2368
  %2371 = getelementptr inbounds nuw i8, ptr %1557, i64 6208
  store <8 x double> %2370, ptr %2371, align 64, !tbaa !26
  %2372 = getelementptr inbounds nuw i8, ptr %1557, i64 8744
  %2373 = load ptr, ptr %2372, align 8, !tbaa !96
  %2374 = load <8 x double>, ptr %2373, align 64, !tbaa !26
  %2375 = fsub <8 x double> splat (double 1.000000e+00), %2374
  %2376 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2364, <8 x double> %2375, <8 x double> %2223)
  %2377 = select <8 x i1> %2369, <8 x double> %2231, <8 x double> %2376
  br label %2378

2378:                                             ; preds = %2242, %2362
  %2379 = phi <8 x double> [ %2231, %2242 ], [ %2377, %2362 ]
  %2380 = getelementptr inbounds nuw i8, ptr %1557, i64 6272
  store <8 x double> %2379, ptr %2380, align 64, !tbaa !26
  %2381 = add nuw nsw i64 %1555, 1
  %2382 = load i64, ptr %179, align 8, !tbaa !20
  %2383 = icmp slt i64 %2381, %2382
  br i1 %2383, label %1554, label %1551, !llvm.loop !98

2384:                                             ; preds = %2499, %1542, %1551
  %2385 = phi <8 x double> [ %1552, %1551 ], [ %1543, %1542 ], [ %1552, %2499 ]
  %2386 = phi i64 [ %2382, %1551 ], [ %1537, %1542 ], [ %2500, %2499 ]
  %2387 = fcmp ogt <8 x double> %2385, zeroinitializer
  %2388 = bitcast <8 x i1> %2387 to i8
  %2389 = icmp eq i8 %2388, 0
  br i1 %2389, label %2586, label %2503

2390:                                             ; preds = %1551, %2499
  %2391 = phi i64 [ %2500, %2499 ], [ %2382, %1551 ]
  %2392 = phi i64 [ %2501, %2499 ], [ 0, %1551 ]
  %2393 = load ptr, ptr %152, align 8, !tbaa !28
  %2394 = getelementptr inbounds nuw %struct.Piece, ptr %2393, i64 %2392
  %2395 = getelementptr inbounds nuw i8, ptr %2394, i64 8448
  %2396 = load <8 x i64>, ptr %2395, align 64, !tbaa !26
  %2397 = getelementptr inbounds nuw i8, ptr %2394, i64 2240
  %2398 = load <8 x double>, ptr %2397, align 64, !tbaa !26
  %2399 = fcmp ogt <8 x double> %2398, zeroinitializer
  %2400 = select <8 x i1> %2399, <8 x i64> %2396, <8 x i64> zeroinitializer
  %2401 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2400)
  %2402 = icmp eq i64 %2401, 0
  br i1 %2402, label %2499, label %2403

2403:                                             ; preds = %2390
  %2404 = load <8 x double>, ptr %2394, align 64, !tbaa !26
  %2405 = getelementptr inbounds nuw i8, ptr %2394, i64 2944
  %2406 = load <8 x double>, ptr %2405, align 64, !tbaa !26
  %2407 = fsub <8 x double> %2404, %2406
  %2408 = getelementptr inbounds nuw i8, ptr %2394, i64 7296
  %2409 = load <8 x double>, ptr %2408, align 64, !tbaa !26
  %2410 = fsub <8 x double> splat (double 1.000000e+00), %2409
  %2411 = getelementptr inbounds nuw i8, ptr %2394, i64 1920
  %2412 = load <8 x double>, ptr %2411, align 64, !tbaa !26
  %2413 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2410, <8 x double> %2412, <8 x double> %2407)
  %2414 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2415 = fdiv <8 x double> splat (double 1.000000e+00), %2414
  %2416 = fcmp ogt <8 x double> %2398, splat (double 1.000000e-30)
  %2417 = select <8 x i1> %2416, <8 x double> %2398, <8 x double> splat (double 1.000000e-30)
  %2418 = fdiv <8 x double> %2413, %2417
  %2419 = fadd <8 x double> %2415, %2418
  %2420 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2421 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2420, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2422 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2420, <8 x double> %2421, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2423 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2424 = getelementptr inbounds nuw i8, ptr %2394, i64 6208
  %2425 = load <8 x double>, ptr %2424, align 64, !tbaa !26
  %2426 = getelementptr inbounds nuw i8, ptr %2394, i64 6272
  %2427 = load <8 x double>, ptr %2426, align 64, !tbaa !26
  %2428 = fdiv <8 x double> %2425, %2427
  %2429 = fcmp olt <8 x double> %2428, %2420
  %2430 = select <8 x i1> %2429, <8 x double> %2428, <8 x double> %2420
  %2431 = getelementptr inbounds nuw i8, ptr %2394, i64 3584
  %2432 = load <8 x double>, ptr %2431, align 64, !tbaa !26
  %2433 = fcmp olt <8 x double> %2432, %2430
  %2434 = select <8 x i1> %2433, <8 x double> %2432, <8 x double> %2430
  %2435 = fneg <8 x double> %2427
  br label %2439

2436:                                             ; preds = %2439
  %2437 = getelementptr inbounds nuw i8, ptr %2394, i64 6336
  store <8 x double> %2490, ptr %2437, align 64, !tbaa !26
  %2438 = load i64, ptr %179, align 8, !tbaa !20
  br label %2499

2439:                                             ; preds = %2403, %2439
  %2440 = phi <8 x i64> [ %2400, %2403 ], [ %2493, %2439 ]
  %2441 = phi i32 [ 0, %2403 ], [ %2494, %2439 ]
  %2442 = phi <8 x double> [ %2434, %2403 ], [ %2490, %2439 ]
  %2443 = fadd <8 x double> %2442, splat (double 2.731500e+02)
  %2444 = fcmp ogt <8 x double> %2442, zeroinitializer
  %2445 = select <8 x i1> %2444, <8 x double> %2442, <8 x double> zeroinitializer
  %2446 = fadd <8 x double> %2445, splat (double 2.731500e+02)
  %2447 = fadd <8 x double> %2446, splat (double 0xC08451671D164BD4)
  %2448 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %2447
  %2449 = fsub <8 x double> %2446, %2448
  %2450 = fadd <8 x double> %2449, splat (double 0x40923C3565924845)
  %2451 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2449, <8 x double> %2450, <8 x double> splat (double 0xC12619EA558539E6))
  %2452 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2449, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %2453 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2449, <8 x double> %2452, <8 x double> splat (double 0xC148A99584203885))
  %2454 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2449, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %2455 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2449, <8 x double> %2454, <8 x double> splat (double 0x4118B9E59F2691E5))
  %2456 = fmul <8 x double> %2455, splat (double 2.000000e+00)
  %2457 = fmul <8 x double> %2451, splat (double 4.000000e+00)
  %2458 = fneg <8 x double> %2455
  %2459 = fmul <8 x double> %2457, %2458
  %2460 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2453, <8 x double> %2453, <8 x double> %2459)
  %2461 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2460)
  %2462 = fsub <8 x double> %2461, %2453
  %2463 = fdiv <8 x double> %2456, %2462
  %2464 = fmul <8 x double> %2463, %2463
  %2465 = fmul <8 x double> %2464, splat (double 1.000000e+06)
  %2466 = fmul <8 x double> %2464, %2465
  %2467 = fmul <8 x double> %2443, splat (double 4.615260e+02)
  %2468 = fdiv <8 x double> %2466, %2467
  %2469 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2435, <8 x double> %2442, <8 x double> %2425)
  %2470 = fsub <8 x double> %2468, %2423
  %2471 = fcmp ogt <8 x double> %2470, zeroinitializer
  %2472 = select <8 x i1> %2471, <8 x double> %2470, <8 x double> zeroinitializer
  %2473 = fmul <8 x double> %2422, %2472
  %2474 = fdiv <8 x double> %2473, %2419
  %2475 = fsub <8 x double> %2469, %2474
  %2476 = fmul <8 x double> %2422, %2468
  %2477 = fdiv <8 x double> %2422, %2467
  %2478 = fadd <8 x double> %2477, splat (double -1.000000e+00)
  %2479 = fmul <8 x double> %2478, %2476
  %2480 = fdiv <8 x double> %2479, %2443
  %2481 = fdiv <8 x double> %2480, %2419
  %2482 = fcmp ule <8 x double> %2468, %2423
  %2483 = select <8 x i1> %2482, <8 x double> zeroinitializer, <8 x double> %2481
  %2484 = fsub <8 x double> %2435, %2483
  %2485 = fdiv <8 x double> %2475, %2484
  %2486 = fsub <8 x double> %2442, %2485
  %2487 = fcmp olt <8 x double> %2486, %2430
  %2488 = select <8 x i1> %2487, <8 x double> %2486, <8 x double> %2430
  %2489 = icmp eq <8 x i64> %2440, zeroinitializer
  %2490 = select <8 x i1> %2489, <8 x double> %2442, <8 x double> %2488
  %2491 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2485)
  %2492 = fcmp oge <8 x double> %2491, splat (double 1.000000e-05)
  %2493 = select <8 x i1> %2492, <8 x i64> %2440, <8 x i64> zeroinitializer
  %2494 = add nuw nsw i32 %2441, 1
  %2495 = icmp samesign ult i32 %2441, 7
  %2496 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2493)
  %2497 = icmp ne i64 %2496, 0
  %2498 = select i1 %2495, i1 %2497, i1 false
  br i1 %2498, label %2439, label %2436, !llvm.loop !99

2499:                                             ; preds = %2390, %2436
  %2500 = phi i64 [ %2391, %2390 ], [ %2438, %2436 ]
  %2501 = add nuw nsw i64 %2392, 1
  %2502 = icmp slt i64 %2501, %2500
  br i1 %2502, label %2390, label %2384, !llvm.loop !100

2503:                                             ; preds = %2384
  %2504 = sext <8 x i1> %2387 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2504, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %2505 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %2506 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2507 = fadd <8 x double> %2505, %2506
  store <8 x double> %2507, ptr %6, align 64, !tbaa !26
  %2508 = load ptr, ptr %192, align 8
  %2509 = load ptr, ptr %194, align 8
  %2510 = load ptr, ptr %195, align 8
  br label %2511

2511:                                             ; preds = %2581, %2503
  %2512 = phi i64 [ 0, %2503 ], [ %2582, %2581 ]
  %2513 = getelementptr inbounds nuw i64, ptr %4, i64 %2512
  %2514 = load i64, ptr %2513, align 8, !tbaa !30
  %2515 = icmp eq i64 %2514, 0
  br i1 %2515, label %2581, label %2516

2516:                                             ; preds = %2511
  %2517 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %2512
  %2518 = load i64, ptr %2517, align 8, !tbaa !30
  %2519 = shl nsw i64 %2518, 1
  %2520 = or disjoint i64 %2519, 1
  %2521 = getelementptr inbounds i64, ptr %2508, i64 %2520
  %2522 = load i64, ptr %2521, align 8, !tbaa !30
  %2523 = shl nuw nsw i64 %2512, 1
  %2524 = or disjoint i64 %2523, 1
  %2525 = getelementptr inbounds nuw [16 x i64], ptr %193, i64 0, i64 %2524
  %2526 = getelementptr inbounds i64, ptr %2510, i64 %2520
  %2527 = load i64, ptr %2526, align 8, !tbaa !30
  %2528 = shl nsw i64 %2527, 4
  %2529 = getelementptr inbounds i8, ptr %2509, i64 %2528
  %2530 = getelementptr inbounds nuw double, ptr %6, i64 %2512
  %2531 = load double, ptr %2530, align 8, !tbaa !44
  %2532 = load i64, ptr %2525, align 8, !tbaa !30
  %2533 = getelementptr i8, ptr %2529, i64 -16
  %2534 = icmp sgt i64 %2532, 0
  br i1 %2534, label %2535, label %2544

2535:                                             ; preds = %2516, %2541
  %2536 = phi i64 [ %2542, %2541 ], [ %2532, %2516 ]
  %2537 = shl i64 %2536, 4
  %2538 = getelementptr i8, ptr %2533, i64 %2537
  %2539 = load double, ptr %2538, align 8, !tbaa !44
  %2540 = fcmp ugt double %2531, %2539
  br i1 %2540, label %2544, label %2541

2541:                                             ; preds = %2535
  %2542 = add nsw i64 %2536, -1
  store i64 %2542, ptr %2525, align 8, !tbaa !30
  %2543 = icmp sgt i64 %2536, 1
  br i1 %2543, label %2535, label %2544, !llvm.loop !80

2544:                                             ; preds = %2541, %2535, %2516
  %2545 = phi i64 [ %2532, %2516 ], [ 0, %2541 ], [ %2536, %2535 ]
  %2546 = icmp slt i64 %2545, %2522
  br i1 %2546, label %2547, label %2556

2547:                                             ; preds = %2544, %2553
  %2548 = phi i64 [ %2554, %2553 ], [ %2545, %2544 ]
  %2549 = shl nsw i64 %2548, 4
  %2550 = getelementptr inbounds i8, ptr %2529, i64 %2549
  %2551 = load double, ptr %2550, align 8, !tbaa !44
  %2552 = fcmp ule double %2531, %2551
  br i1 %2552, label %2561, label %2553

2553:                                             ; preds = %2547
  %2554 = add i64 %2548, 1
  store i64 %2554, ptr %2525, align 8, !tbaa !30
  %2555 = icmp eq i64 %2554, %2522
  br i1 %2555, label %2556, label %2547, !llvm.loop !81

2556:                                             ; preds = %2553, %2544
  %2557 = shl i64 %2522, 4
  %2558 = getelementptr i8, ptr %2529, i64 %2557
  %2559 = getelementptr i8, ptr %2558, i64 -8
  %2560 = load double, ptr %2559, align 8, !tbaa !44
  br label %2578

2561:                                             ; preds = %2547
  %2562 = shl nsw i64 %2548, 1
  %2563 = or disjoint i64 %2562, 1
  %2564 = getelementptr inbounds double, ptr %2529, i64 %2563
  %2565 = load double, ptr %2564, align 8, !tbaa !44
  %2566 = icmp sgt i64 %2548, 0
  br i1 %2566, label %2567, label %2578

2567:                                             ; preds = %2561
  %2568 = getelementptr inbounds nuw i8, ptr %2529, i64 %2549
  %2569 = getelementptr i8, ptr %2568, i64 -8
  %2570 = load double, ptr %2569, align 8, !tbaa !44
  %2571 = getelementptr i8, ptr %2568, i64 -16
  %2572 = load double, ptr %2571, align 8, !tbaa !44
  %2573 = fsub double %2531, %2572
  %2574 = fsub double %2551, %2572
  %2575 = fdiv double %2573, %2574
  %2576 = fsub double %2565, %2570
  %2577 = tail call double @llvm.fmuladd.f64(double %2575, double %2576, double %2570)
  br label %2578

2578:                                             ; preds = %2567, %2561, %2556
  %2579 = phi double [ %2577, %2567 ], [ %2565, %2561 ], [ %2560, %2556 ]
  %2580 = getelementptr inbounds nuw double, ptr %5, i64 %2512
  store double %2579, ptr %2580, align 8, !tbaa !44
  br label %2581

2581:                                             ; preds = %2578, %2511
  %2582 = add nuw nsw i64 %2512, 1
  %2583 = icmp eq i64 %2582, 8
  br i1 %2583, label %2584, label %2511, !llvm.loop !82

2584:                                             ; preds = %2581
  %2585 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2586

2586:                                             ; preds = %2384, %2584
  %2587 = phi <8 x double> [ %2585, %2584 ], [ zeroinitializer, %2384 ]
  %2588 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2589 = fcmp ogt <8 x double> %2588, zeroinitializer
  %2590 = sext <8 x i1> %2589 to <8 x i64>
  %2591 = xor <8 x i64> %2590, splat (i64 -1)
  %2592 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %2593 = fcmp oeq <8 x double> %2592, splat (double 1.000000e+00)
  %2594 = fcmp oeq <8 x double> %2592, splat (double 2.000000e+00)
  %2595 = or <8 x i1> %2593, %2594
  %2596 = select <8 x i1> %2595, <8 x i64> %2591, <8 x i64> zeroinitializer
  %2597 = xor <8 x i64> %2596, %2590
  %2598 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2599 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2600 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2601 = icmp eq <8 x i64> %2597, splat (i64 -1)
  %2602 = select <8 x i1> %2601, <8 x double> %2600, <8 x double> %2599
  %2603 = bitcast <8 x i1> %2589 to i8
  %2604 = icmp eq i8 %2603, 0
  br i1 %2604, label %2636, label %2605

2605:                                             ; preds = %2586
  %2606 = select <8 x i1> %2589, <8 x double> %2587, <8 x double> %2602
  %2607 = fmul <8 x double> %2606, splat (double 0x3EB0C6F7A0B5ED8D)
  %2608 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2607)
  %2609 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2608)
  %2610 = fmul <8 x double> %2609, %2609
  %2611 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2609, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2610)
  %2612 = fadd <8 x double> %2611, splat (double 0x402DD4891DBECC6B)
  %2613 = fmul <8 x double> %2609, splat (double 0x40C77A698FD9BCCA)
  %2614 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2610, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2613)
  %2615 = fadd <8 x double> %2614, splat (double 0xC0B2D7440748F0B3)
  %2616 = fmul <8 x double> %2609, splat (double 0xC148A99584203885)
  %2617 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2610, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2616)
  %2618 = fadd <8 x double> %2617, splat (double 0x4118B9E59F2691E5)
  %2619 = fmul <8 x double> %2618, splat (double 2.000000e+00)
  %2620 = fneg <8 x double> %2615
  %2621 = fmul <8 x double> %2612, splat (double 4.000000e+00)
  %2622 = fneg <8 x double> %2618
  %2623 = fmul <8 x double> %2621, %2622
  %2624 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2615, <8 x double> %2615, <8 x double> %2623)
  %2625 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2624)
  %2626 = fsub <8 x double> %2620, %2625
  %2627 = fdiv <8 x double> %2619, %2626
  %2628 = fadd <8 x double> %2627, splat (double 0x408451671D164BD4)
  %2629 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2627, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2630 = fmul <8 x double> %2629, splat (double -4.000000e+00)
  %2631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2628, <8 x double> %2628, <8 x double> %2630)
  %2632 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2631)
  %2633 = fsub <8 x double> %2628, %2632
  %2634 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2633, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2635 = select <8 x i1> %2589, <8 x double> %2634, <8 x double> %2598
  br label %2636

2636:                                             ; preds = %2605, %2586
  %2637 = phi <8 x double> [ %2606, %2605 ], [ %2602, %2586 ]
  %2638 = phi <8 x double> [ %2635, %2605 ], [ %2598, %2586 ]
  %2639 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2640 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %2641 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %2642 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %2643 = fmul <8 x double> %2641, %2642
  %2644 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2639, <8 x double> %2640, <8 x double> %2643)
  %2645 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2646 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2647 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2648 = fneg <8 x double> %2644
  %2649 = fmul <8 x double> %2647, %2648
  %2650 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2645, <8 x double> %2646, <8 x double> %2649)
  %2651 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2652 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2647, <8 x double> %2651, <8 x double> %2645)
  %2653 = fdiv <8 x double> %2650, %2652
  %2654 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %2655 = select <8 x i1> %2601, <8 x double> %2654, <8 x double> %2599
  store <8 x double> %2655, ptr %208, align 64, !tbaa !26
  %2656 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %2657 = select <8 x i1> %2601, <8 x double> %2656, <8 x double> %2653
  store <8 x double> %2657, ptr %209, align 64, !tbaa !26
  store <8 x double> %2637, ptr %202, align 64, !tbaa !26
  %2658 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %2659 = and <8 x i64> %2658, %2596
  %2660 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2659)
  %2661 = icmp eq i64 %2660, 0
  br i1 %2661, label %3230, label %2662

2662:                                             ; preds = %2636
  %2663 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %2664 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %2665 = fmul <8 x double> %2641, %2664
  %2666 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2639, <8 x double> %2663, <8 x double> %2665)
  %2667 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2668 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %2669 = fdiv <8 x double> %2667, %2668
  %2670 = fmul <8 x double> %2599, splat (double 3.000000e-01)
  %2671 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %2672 = fadd <8 x double> %2599, %2671
  %2673 = fadd <8 x double> %2672, splat (double 2.000000e+05)
  %2674 = fmul <8 x double> %2668, splat (double 2.870530e+02)
  %2675 = fdiv <8 x double> %2599, %2674
  %2676 = fcmp ogt <8 x double> %2637, %2670
  %2677 = select <8 x i1> %2676, <8 x double> %2637, <8 x double> %2670
  %2678 = fcmp olt <8 x double> %2677, %2673
  %2679 = select <8 x i1> %2678, <8 x double> %2677, <8 x double> %2673
  %2680 = icmp eq <8 x i64> %2596, zeroinitializer
  %2681 = select <8 x i1> %2680, <8 x double> %2637, <8 x double> %2679
  %2682 = fdiv <8 x double> %2655, splat (double 2.870530e+02)
  %2683 = fmul <8 x double> %2675, splat (double 2.000000e+00)
  %2684 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2683)
  br label %2685

2685:                                             ; preds = %3012, %2662
  %2686 = phi <8 x double> [ %2638, %2662 ], [ %2720, %3012 ]
  %2687 = phi <8 x double> [ %2670, %2662 ], [ %3169, %3012 ]
  %2688 = phi <8 x double> [ %2673, %2662 ], [ %3166, %3012 ]
  %2689 = phi <8 x i64> [ %2659, %2662 ], [ %3185, %3012 ]
  %2690 = phi i32 [ 0, %2662 ], [ %3190, %3012 ]
  %2691 = phi <8 x double> [ %2681, %2662 ], [ %3187, %3012 ]
  %2692 = fmul <8 x double> %2691, splat (double 0x3EB0C6F7A0B5ED8D)
  %2693 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2692)
  %2694 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2693)
  %2695 = fmul <8 x double> %2694, %2694
  %2696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2694, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2695)
  %2697 = fadd <8 x double> %2696, splat (double 0x402DD4891DBECC6B)
  %2698 = fmul <8 x double> %2694, splat (double 0x40C77A698FD9BCCA)
  %2699 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2695, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2698)
  %2700 = fadd <8 x double> %2699, splat (double 0xC0B2D7440748F0B3)
  %2701 = fmul <8 x double> %2694, splat (double 0xC148A99584203885)
  %2702 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2695, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2701)
  %2703 = fadd <8 x double> %2702, splat (double 0x4118B9E59F2691E5)
  %2704 = fmul <8 x double> %2703, splat (double 2.000000e+00)
  %2705 = fneg <8 x double> %2700
  %2706 = fmul <8 x double> %2697, splat (double 4.000000e+00)
  %2707 = fneg <8 x double> %2703
  %2708 = fmul <8 x double> %2706, %2707
  %2709 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2700, <8 x double> %2700, <8 x double> %2708)
  %2710 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2709)
  %2711 = fsub <8 x double> %2705, %2710
  %2712 = fdiv <8 x double> %2704, %2711
  %2713 = fadd <8 x double> %2712, splat (double 0x408451671D164BD4)
  %2714 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2712, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2715 = fmul <8 x double> %2714, splat (double -4.000000e+00)
  %2716 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2713, <8 x double> %2713, <8 x double> %2715)
  %2717 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2716)
  %2718 = fsub <8 x double> %2713, %2717
  %2719 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2718, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2720 = select <8 x i1> %2680, <8 x double> %2686, <8 x double> %2719
  %2721 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2720, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2722 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2720, <8 x double> %2721, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2723 = load i64, ptr %179, align 8, !tbaa !20, !noalias !101
  %2724 = icmp sgt i64 %2723, 0
  br i1 %2724, label %2725, label %3012

2725:                                             ; preds = %2685
  %2726 = fdiv <8 x double> splat (double 1.000000e+00), %2722
  br label %2727

2727:                                             ; preds = %2725, %2998
  %2728 = phi <8 x double> [ zeroinitializer, %2725 ], [ %3008, %2998 ]
  %2729 = phi <8 x double> [ zeroinitializer, %2725 ], [ %3007, %2998 ]
  %2730 = phi i64 [ 0, %2725 ], [ %3009, %2998 ]
  %2731 = load ptr, ptr %152, align 8, !tbaa !28, !noalias !101
  %2732 = getelementptr inbounds nuw %struct.Piece, ptr %2731, i64 %2730
  %2733 = getelementptr inbounds nuw i8, ptr %2732, i64 6208
  %2734 = load <8 x double>, ptr %2733, align 64, !tbaa !26, !noalias !101
  %2735 = getelementptr inbounds nuw i8, ptr %2732, i64 6272
  %2736 = load <8 x double>, ptr %2735, align 64, !tbaa !26, !noalias !101
  %2737 = getelementptr inbounds nuw i8, ptr %2732, i64 7616
  %2738 = load <8 x double>, ptr %2737, align 64, !tbaa !26, !noalias !101
  %2739 = fcmp ule <8 x double> %2738, splat (double 1.000000e+00)
  %2740 = fmul <8 x double> %2720, %2736
  %2741 = fcmp ogt <8 x double> %2734, %2740
  %2742 = and <8 x i1> %2739, %2741
  %2743 = fneg <8 x double> %2736
  %2744 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2743, <8 x double> %2720, <8 x double> %2734)
  %2745 = fmul <8 x double> %2726, %2744
  %2746 = select <8 x i1> %2742, <8 x double> %2745, <8 x double> zeroinitializer
  %2747 = fmul <8 x double> %2726, %2743
  %2748 = select <8 x i1> %2742, <8 x double> %2747, <8 x double> zeroinitializer
  %2749 = xor <8 x i1> %2742, splat (i1 true)
  %2750 = bitcast <8 x i1> %2749 to i8
  %2751 = icmp eq i8 %2750, 0
  br i1 %2751, label %2755, label %2752

2752:                                             ; preds = %2727
  %2753 = fdiv <8 x double> %2734, %2736
  %2754 = select <8 x i1> %2742, <8 x double> %2720, <8 x double> %2753
  br label %2755

2755:                                             ; preds = %2752, %2727
  %2756 = phi <8 x double> [ %2754, %2752 ], [ %2720, %2727 ]
  %2757 = getelementptr inbounds nuw i8, ptr %2732, i64 8448
  %2758 = load <8 x i64>, ptr %2757, align 64, !tbaa !26, !noalias !101
  %2759 = getelementptr inbounds nuw i8, ptr %2732, i64 2240
  %2760 = load <8 x double>, ptr %2759, align 64, !tbaa !26, !noalias !101
  %2761 = fcmp ogt <8 x double> %2760, zeroinitializer
  %2762 = select <8 x i1> %2739, <8 x i1> %2761, <8 x i1> zeroinitializer
  %2763 = select <8 x i1> %2762, <8 x i64> %2758, <8 x i64> zeroinitializer
  %2764 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2763)
  %2765 = icmp eq i64 %2764, 0
  br i1 %2765, label %2777, label %2766

2766:                                             ; preds = %2755
  %2767 = getelementptr inbounds nuw i8, ptr %2732, i64 6336
  %2768 = load <8 x double>, ptr %2767, align 64, !tbaa !26, !noalias !101
  %2769 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2743, <8 x double> %2768, <8 x double> %2734)
  %2770 = fcmp ogt <8 x double> %2769, zeroinitializer
  %2771 = select <8 x i1> %2770, <8 x double> %2769, <8 x double> zeroinitializer
  %2772 = fmul <8 x double> %2726, %2771
  %2773 = icmp eq <8 x i64> %2763, zeroinitializer
  %2774 = select <8 x i1> %2773, <8 x double> %2746, <8 x double> %2772
  %2775 = select <8 x i1> %2773, <8 x double> %2756, <8 x double> %2768
  %2776 = select <8 x i1> %2773, <8 x double> %2748, <8 x double> zeroinitializer
  br label %2777

2777:                                             ; preds = %2766, %2755
  %2778 = phi <8 x double> [ %2775, %2766 ], [ %2756, %2755 ]
  %2779 = phi <8 x double> [ %2776, %2766 ], [ %2748, %2755 ]
  %2780 = phi <8 x double> [ %2774, %2766 ], [ %2746, %2755 ]
  %2781 = getelementptr inbounds nuw i8, ptr %2732, i64 6016
  store <8 x double> %2780, ptr %2781, align 64, !tbaa !26, !noalias !101
  %2782 = getelementptr inbounds nuw i8, ptr %2732, i64 5952
  store <8 x double> %2778, ptr %2782, align 64, !tbaa !26, !noalias !101
  %2783 = getelementptr inbounds nuw i8, ptr %2732, i64 6080
  store <8 x double> zeroinitializer, ptr %2783, align 64, !tbaa !26, !noalias !101
  %2784 = load i64, ptr %141, align 16, !tbaa !21, !noalias !101
  %2785 = sitofp i64 %2784 to double
  %2786 = insertelement <8 x double> poison, double %2785, i64 0
  %2787 = shufflevector <8 x double> %2786, <8 x double> poison, <8 x i32> zeroinitializer
  %2788 = getelementptr inbounds nuw i8, ptr %2732, i64 6144
  store <8 x double> %2787, ptr %2788, align 64, !tbaa !26, !noalias !101
  %2789 = getelementptr inbounds nuw i8, ptr %2732, i64 7872
  %2790 = getelementptr inbounds nuw i8, ptr %2732, i64 8128
  %2791 = load <8 x double>, ptr %2790, align 64, !tbaa !26, !noalias !104
  %2792 = fcmp ole <8 x double> %2720, %2791
  %2793 = getelementptr inbounds nuw i8, ptr %2732, i64 8192
  %2794 = load <8 x double>, ptr %2793, align 64, !tbaa !26, !noalias !104
  %2795 = fcmp oge <8 x double> %2720, %2794
  %2796 = or <8 x i1> %2792, %2795
  %2797 = bitcast <8 x i1> %2796 to i8
  %2798 = icmp eq i8 %2797, 0
  br i1 %2798, label %2799, label %2802

2799:                                             ; preds = %2777
  %2800 = getelementptr inbounds nuw i8, ptr %2732, i64 8000
  %2801 = load <8 x double>, ptr %2800, align 64, !tbaa !26, !noalias !104
  br label %2924

2802:                                             ; preds = %2777
  %2803 = load i64, ptr %141, align 16, !tbaa !21, !noalias !107
  %2804 = sitofp i64 %2803 to double
  %2805 = insertelement <8 x double> poison, double %2804, i64 0
  %2806 = shufflevector <8 x double> %2805, <8 x double> poison, <8 x i32> zeroinitializer
  %2807 = icmp sgt i64 %2803, 0
  br i1 %2807, label %2808, label %2899

2808:                                             ; preds = %2802
  %2809 = sext <8 x i1> %2796 to <8 x i64>
  %2810 = getelementptr inbounds nuw i8, ptr %2732, i64 8632
  %2811 = load ptr, ptr %2810, align 8, !tbaa !89, !noalias !107
  %2812 = getelementptr inbounds nuw i8, ptr %2732, i64 8640
  %2813 = load ptr, ptr %2812, align 64, !tbaa !90, !noalias !107
  %2814 = getelementptr inbounds nuw i8, ptr %2732, i64 8512
  %2815 = load i64, ptr %2814, align 64, !tbaa !31, !noalias !107
  %2816 = getelementptr inbounds nuw i8, ptr %2732, i64 8656
  %2817 = getelementptr inbounds nuw i8, ptr %2732, i64 8648
  %2818 = getelementptr inbounds nuw i8, ptr %2732, i64 8664
  br label %2819

2819:                                             ; preds = %2808, %2867
  %2820 = phi <8 x i64> [ %2809, %2808 ], [ %2839, %2867 ]
  %2821 = phi i64 [ %2803, %2808 ], [ %2829, %2867 ]
  %2822 = phi <8 x double> [ splat (double 1.000000e+09), %2808 ], [ %2882, %2867 ]
  %2823 = phi <8 x double> [ zeroinitializer, %2808 ], [ %2886, %2867 ]
  %2824 = phi <8 x double> [ splat (double 1.000000e+09), %2808 ], [ %2864, %2867 ]
  %2825 = phi <8 x double> [ splat (double 1.000000e+00), %2808 ], [ %2863, %2867 ]
  %2826 = phi <8 x double> [ %2806, %2808 ], [ %2890, %2867 ]
  %2827 = phi <8 x double> [ zeroinitializer, %2808 ], [ %2879, %2867 ]
  %2828 = phi <8 x double> [ zeroinitializer, %2808 ], [ %2877, %2867 ]
  %2829 = add nsw i64 %2821, -1
  %2830 = getelementptr inbounds nuw <8 x double>, ptr %2811, i64 %2829
  %2831 = load <8 x double>, ptr %2830, align 64, !tbaa !26, !noalias !107
  %2832 = getelementptr inbounds nuw <8 x double>, ptr %2813, i64 %2829
  %2833 = load <8 x double>, ptr %2832, align 64, !tbaa !26, !noalias !107
  %2834 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2833, <8 x double> %2720, <8 x double> %2831)
  %2835 = fsub <8 x double> %2834, %2720
  %2836 = fcmp ogt <8 x double> %2835, splat (double 1.000000e-09)
  %2837 = select <8 x i1> %2836, <8 x i64> %2820, <8 x i64> zeroinitializer
  %2838 = icmp sgt i64 %2821, %2815
  %2839 = select i1 %2838, <8 x i64> %2837, <8 x i64> zeroinitializer
  %2840 = icmp slt i64 %2821, %2803
  br i1 %2840, label %2841, label %2853

2841:                                             ; preds = %2819
  %2842 = load ptr, ptr %2816, align 16, !tbaa !87, !noalias !107
  %2843 = getelementptr inbounds nuw <8 x double>, ptr %2842, i64 %2821
  %2844 = load <8 x double>, ptr %2843, align 64, !tbaa !26, !noalias !107
  %2845 = fmul <8 x double> %2835, %2844
  %2846 = icmp eq <8 x i64> %2839, %2820
  %2847 = select <8 x i1> %2846, <8 x double> zeroinitializer, <8 x double> %2845
  %2848 = fadd <8 x double> %2828, %2847
  %2849 = fadd <8 x double> %2833, splat (double -1.000000e+00)
  %2850 = fmul <8 x double> %2849, %2844
  %2851 = select <8 x i1> %2846, <8 x double> zeroinitializer, <8 x double> %2850
  %2852 = fadd <8 x double> %2827, %2851
  br label %2853

2853:                                             ; preds = %2841, %2819
  %2854 = phi <8 x double> [ %2848, %2841 ], [ %2828, %2819 ]
  %2855 = phi <8 x double> [ %2852, %2841 ], [ %2827, %2819 ]
  br i1 %2838, label %2856, label %2862

2856:                                             ; preds = %2853
  %2857 = fneg <8 x double> %2835
  %2858 = icmp eq <8 x i64> %2839, %2820
  %2859 = select <8 x i1> %2858, <8 x double> %2824, <8 x double> %2857
  %2860 = fsub <8 x double> splat (double 1.000000e+00), %2833
  %2861 = select <8 x i1> %2858, <8 x double> %2825, <8 x double> %2860
  br label %2862

2862:                                             ; preds = %2856, %2853
  %2863 = phi <8 x double> [ %2861, %2856 ], [ %2825, %2853 ]
  %2864 = phi <8 x double> [ %2859, %2856 ], [ %2824, %2853 ]
  %2865 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2839)
  %2866 = icmp eq i64 %2865, 0
  br i1 %2866, label %2892, label %2867

2867:                                             ; preds = %2862
  %2868 = load ptr, ptr %2817, align 8, !tbaa !86, !noalias !107
  %2869 = getelementptr inbounds nuw <8 x double>, ptr %2868, i64 %2829
  %2870 = load <8 x double>, ptr %2869, align 64, !tbaa !26, !noalias !107
  %2871 = load ptr, ptr %2818, align 8, !tbaa !88, !noalias !107
  %2872 = getelementptr inbounds nuw <8 x double>, ptr %2871, i64 %2829
  %2873 = load <8 x double>, ptr %2872, align 64, !tbaa !26, !noalias !107
  %2874 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2873, <8 x double> %2720, <8 x double> %2870)
  %2875 = icmp eq <8 x i64> %2839, zeroinitializer
  %2876 = select <8 x i1> %2875, <8 x double> zeroinitializer, <8 x double> %2874
  %2877 = fadd <8 x double> %2854, %2876
  %2878 = select <8 x i1> %2875, <8 x double> zeroinitializer, <8 x double> %2873
  %2879 = fadd <8 x double> %2855, %2878
  %2880 = fcmp olt <8 x double> %2822, %2835
  %2881 = select <8 x i1> %2875, <8 x i1> splat (i1 true), <8 x i1> %2880
  %2882 = select <8 x i1> %2881, <8 x double> %2822, <8 x double> %2835
  %2883 = fsub <8 x double> splat (double 1.000000e+00), %2833
  %2884 = fcmp ogt <8 x double> %2823, %2883
  %2885 = select <8 x i1> %2875, <8 x i1> splat (i1 true), <8 x i1> %2884
  %2886 = select <8 x i1> %2885, <8 x double> %2823, <8 x double> %2883
  %2887 = uitofp nneg i64 %2829 to double
  %2888 = insertelement <8 x double> poison, double %2887, i64 0
  %2889 = shufflevector <8 x double> %2888, <8 x double> poison, <8 x i32> zeroinitializer
  %2890 = select <8 x i1> %2875, <8 x double> %2826, <8 x double> %2889
  %2891 = icmp samesign ugt i64 %2821, 1
  br i1 %2891, label %2819, label %2892, !llvm.loop !110

2892:                                             ; preds = %2862, %2867
  %2893 = phi <8 x double> [ %2890, %2867 ], [ %2826, %2862 ]
  %2894 = phi <8 x double> [ %2886, %2867 ], [ %2823, %2862 ]
  %2895 = phi <8 x double> [ %2882, %2867 ], [ %2822, %2862 ]
  %2896 = phi <8 x double> [ %2877, %2867 ], [ %2854, %2862 ]
  %2897 = phi <8 x double> [ %2879, %2867 ], [ %2855, %2862 ]
  %2898 = fdiv <8 x double> %2864, %2863
  br label %2899

2899:                                             ; preds = %2892, %2802
  %2900 = phi <8 x double> [ %2806, %2802 ], [ %2893, %2892 ]
  %2901 = phi <8 x double> [ zeroinitializer, %2802 ], [ %2894, %2892 ]
  %2902 = phi <8 x double> [ splat (double 1.000000e+09), %2802 ], [ %2895, %2892 ]
  %2903 = phi <8 x double> [ zeroinitializer, %2802 ], [ %2896, %2892 ]
  %2904 = phi <8 x double> [ zeroinitializer, %2802 ], [ %2897, %2892 ]
  %2905 = phi <8 x double> [ splat (double 1.000000e+09), %2802 ], [ %2898, %2892 ]
  %2906 = fsub <8 x double> %2720, %2905
  %2907 = fcmp ogt <8 x double> %2901, splat (double 1.000000e-09)
  %2908 = select <8 x i1> %2907, <8 x double> %2901, <8 x double> splat (double 1.000000e-09)
  %2909 = fdiv <8 x double> %2902, %2908
  %2910 = fadd <8 x double> %2720, %2909
  %2911 = load <8 x double>, ptr %2789, align 64, !tbaa !26, !noalias !104
  %2912 = select <8 x i1> %2796, <8 x double> %2903, <8 x double> %2911
  store <8 x double> %2912, ptr %2789, align 64, !tbaa !26, !noalias !104
  %2913 = getelementptr inbounds nuw i8, ptr %2732, i64 7936
  %2914 = load <8 x double>, ptr %2913, align 64, !tbaa !26, !noalias !104
  %2915 = select <8 x i1> %2796, <8 x double> %2904, <8 x double> %2914
  store <8 x double> %2915, ptr %2913, align 64, !tbaa !26, !noalias !104
  %2916 = getelementptr inbounds nuw i8, ptr %2732, i64 8000
  %2917 = load <8 x double>, ptr %2916, align 64, !tbaa !26, !noalias !104
  %2918 = select <8 x i1> %2796, <8 x double> %2900, <8 x double> %2917
  store <8 x double> %2918, ptr %2916, align 64, !tbaa !26, !noalias !104
  %2919 = getelementptr inbounds nuw i8, ptr %2732, i64 8064
  %2920 = load <8 x double>, ptr %2919, align 64, !tbaa !26, !noalias !104
  %2921 = select <8 x i1> %2796, <8 x double> %2720, <8 x double> %2920
  store <8 x double> %2921, ptr %2919, align 64, !tbaa !26, !noalias !104
  %2922 = select <8 x i1> %2796, <8 x double> %2906, <8 x double> %2791
  store <8 x double> %2922, ptr %2790, align 64, !tbaa !26, !noalias !104
  %2923 = select <8 x i1> %2796, <8 x double> %2910, <8 x double> %2794
  store <8 x double> %2923, ptr %2793, align 64, !tbaa !26, !noalias !104
  br label %2924

2924:                                             ; preds = %2799, %2899
  %2925 = phi <8 x double> [ %2801, %2799 ], [ %2918, %2899 ]
  %2926 = load i64, ptr %141, align 16, !tbaa !21, !noalias !101
  %2927 = sitofp i64 %2926 to double
  %2928 = insertelement <8 x double> poison, double %2927, i64 0
  %2929 = shufflevector <8 x double> %2928, <8 x double> poison, <8 x i32> zeroinitializer
  %2930 = fcmp olt <8 x double> %2925, %2929
  %2931 = and <8 x i1> %2739, %2930
  %2932 = bitcast <8 x i1> %2931 to i8
  %2933 = icmp eq i8 %2932, 0
  br i1 %2933, label %2998, label %2934

2934:                                             ; preds = %2924
  %2935 = getelementptr inbounds nuw i8, ptr %2732, i64 7936
  %2936 = load <8 x double>, ptr %2935, align 64, !tbaa !26, !noalias !104
  %2937 = getelementptr inbounds nuw i8, ptr %2732, i64 8064
  %2938 = load <8 x double>, ptr %2937, align 64, !tbaa !26, !noalias !104
  %2939 = fsub <8 x double> %2720, %2938
  %2940 = load <8 x double>, ptr %2789, align 64, !tbaa !26, !noalias !104
  %2941 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2936, <8 x double> %2939, <8 x double> %2940)
  %2942 = getelementptr inbounds nuw i8, ptr %2732, i64 6464
  %2943 = load <8 x double>, ptr %2942, align 64, !tbaa !26, !noalias !101
  %2944 = getelementptr inbounds nuw i8, ptr %2732, i64 5888
  %2945 = load <8 x double>, ptr %2944, align 64, !tbaa !26, !noalias !101
  %2946 = getelementptr inbounds nuw i8, ptr %2732, i64 7424
  %2947 = load <8 x double>, ptr %2946, align 64, !tbaa !26, !noalias !101
  %2948 = fneg <8 x double> %2947
  %2949 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2943, <8 x double> %2945, <8 x double> %2948)
  %2950 = getelementptr inbounds nuw i8, ptr %2732, i64 7360
  %2951 = load <8 x double>, ptr %2950, align 64, !tbaa !26, !noalias !101
  %2952 = fadd <8 x double> %2943, %2951
  %2953 = getelementptr inbounds nuw i8, ptr %2732, i64 8320
  %2954 = load <8 x i64>, ptr %2953, align 64, !tbaa !26, !noalias !101
  %2955 = getelementptr inbounds nuw i8, ptr %2732, i64 8736
  %2956 = load ptr, ptr %2955, align 32, !tbaa !95, !noalias !101
  %2957 = load <8 x double>, ptr %2956, align 64, !tbaa !26, !noalias !101
  %2958 = fmul <8 x double> %2943, %2957
  %2959 = icmp eq <8 x i64> %2954, zeroinitializer
  %2960 = select <8 x i1> %2959, <8 x double> %2949, <8 x double> %2958
  %2961 = getelementptr inbounds nuw i8, ptr %2732, i64 8744
  %2962 = load ptr, ptr %2961, align 8, !tbaa !96, !noalias !101
  %2963 = load <8 x double>, ptr %2962, align 64, !tbaa !26, !noalias !101
  %2964 = fsub <8 x double> splat (double 1.000000e+00), %2963
  %2965 = fmul <8 x double> %2943, %2964
  %2966 = select <8 x i1> %2959, <8 x double> %2952, <8 x double> %2965
  %2967 = fneg <8 x double> %2966
  %2968 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2967, <8 x double> %2720, <8 x double> %2960)
  %2969 = fcmp ogt <8 x double> %2941, zeroinitializer
  %2970 = fcmp oge <8 x double> %2968, zeroinitializer
  %2971 = and <8 x i1> %2969, %2970
  %2972 = and <8 x i1> %2931, %2971
  %2973 = sext <8 x i1> %2972 to <8 x i64>
  %2974 = xor <8 x i64> %2973, splat (i64 -1)
  %2975 = fadd <8 x double> %2941, %2968
  %2976 = fcmp ogt <8 x double> %2975, zeroinitializer
  %2977 = and <8 x i1> %2931, %2976
  %2978 = select <8 x i1> %2977, <8 x i64> %2974, <8 x i64> zeroinitializer
  %2979 = or <8 x i64> %2978, %2973
  %2980 = fmul <8 x double> %2726, %2968
  %2981 = select <8 x i1> %2972, <8 x double> %2980, <8 x double> zeroinitializer
  %2982 = icmp eq <8 x i64> %2979, zeroinitializer
  %2983 = select <8 x i1> %2982, <8 x double> %2780, <8 x double> %2981
  store <8 x double> %2983, ptr %2781, align 64, !tbaa !26, !noalias !101
  %2984 = select <8 x i1> %2982, <8 x double> %2778, <8 x double> %2720
  store <8 x double> %2984, ptr %2782, align 64, !tbaa !26, !noalias !101
  %2985 = fsub <8 x double> %2936, %2966
  %2986 = fmul <8 x double> %2726, %2985
  %2987 = select <8 x i1> %2982, <8 x double> %2779, <8 x double> %2986
  %2988 = fmul <8 x double> %2726, %2941
  %2989 = fmul <8 x double> %2726, %2975
  %2990 = icmp eq <8 x i64> %2978, zeroinitializer
  %2991 = select <8 x i1> %2990, <8 x double> zeroinitializer, <8 x double> %2989
  %2992 = select <8 x i1> %2972, <8 x double> %2988, <8 x double> %2991
  store <8 x double> %2992, ptr %2783, align 64, !tbaa !26, !noalias !101
  %2993 = load i64, ptr %141, align 16, !tbaa !21, !noalias !101
  %2994 = sitofp i64 %2993 to double
  %2995 = insertelement <8 x double> poison, double %2994, i64 0
  %2996 = shufflevector <8 x double> %2995, <8 x double> poison, <8 x i32> zeroinitializer
  %2997 = select <8 x i1> %2982, <8 x double> %2996, <8 x double> %2925
  store <8 x double> %2997, ptr %2788, align 64, !tbaa !26, !noalias !101
  br label %2998

2998:                                             ; preds = %2924, %2934
  %2999 = phi <8 x double> [ %2992, %2934 ], [ zeroinitializer, %2924 ]
  %3000 = phi <8 x double> [ %2983, %2934 ], [ %2780, %2924 ]
  %3001 = phi <8 x double> [ %2987, %2934 ], [ %2779, %2924 ]
  %3002 = getelementptr inbounds nuw i8, ptr %2732, i64 128
  %3003 = load <8 x double>, ptr %3002, align 64, !tbaa !26, !noalias !101
  %3004 = fadd <8 x double> %3000, %2999
  %3005 = fmul <8 x double> %3003, %3004
  %3006 = fmul <8 x double> %3001, %3003
  %3007 = fadd <8 x double> %2729, %3005
  %3008 = fadd <8 x double> %2728, %3006
  %3009 = add nuw nsw i64 %2730, 1
  %3010 = load i64, ptr %179, align 8, !tbaa !20, !noalias !101
  %3011 = icmp slt i64 %3009, %3010
  br i1 %3011, label %2727, label %3012, !llvm.loop !111

3012:                                             ; preds = %2998, %2685
  %3013 = phi <8 x double> [ zeroinitializer, %2685 ], [ %3007, %2998 ]
  %3014 = phi <8 x double> [ zeroinitializer, %2685 ], [ %3008, %2998 ]
  %3015 = fsub <8 x double> %2691, %2655
  %3016 = fcmp ogt <8 x double> %3015, zeroinitializer
  %3017 = select <8 x i1> %3016, <8 x double> %3015, <8 x double> zeroinitializer
  %3018 = fadd <8 x double> %2720, splat (double 2.731500e+02)
  %3019 = fdiv <8 x double> %3017, splat (double 4.615260e+02)
  %3020 = fadd <8 x double> %2682, %3019
  %3021 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %3022 = fdiv <8 x double> %3020, %3021
  %3023 = fmul <8 x double> %3021, %3022
  %3024 = fdiv <8 x double> %2691, %3023
  %3025 = load <8 x double>, ptr %201, align 64, !tbaa !26, !noalias !112
  %3026 = fsub <8 x double> %2691, %3025
  %3027 = load <8 x double>, ptr %214, align 64, !tbaa !26, !noalias !112
  %3028 = fsub <8 x double> %3026, %3027
  %3029 = load <8 x double>, ptr %215, align 64, !tbaa !26, !noalias !112
  %3030 = load <8 x double>, ptr %161, align 64, !tbaa !26, !noalias !112
  %3031 = fcmp une <8 x double> %3030, splat (double 2.000000e+00)
  %3032 = load <8 x double>, ptr %216, align 64, !tbaa !26, !noalias !112
  %3033 = select <8 x i1> %3031, <8 x double> zeroinitializer, <8 x double> %3032
  %3034 = fadd <8 x double> %3029, %3033
  %3035 = fcmp ule <8 x double> %3026, zeroinitializer
  %3036 = fcmp ule <8 x double> %3034, zeroinitializer
  %3037 = or <8 x i1> %3035, %3036
  %3038 = fmul <8 x double> %3022, splat (double 2.000000e+00)
  %3039 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3038)
  %3040 = fmul <8 x double> %3039, %3034
  %3041 = fadd <8 x double> %3026, splat (double 2.000000e+02)
  %3042 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3041)
  %3043 = select <8 x i1> %3035, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3042
  %3044 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3026, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3045 = fmul <8 x double> %3044, %3040
  %3046 = fmul <8 x double> %3043, %3043
  %3047 = fmul <8 x double> %3043, %3046
  %3048 = fdiv <8 x double> %3045, %3047
  %3049 = fmul <8 x double> %3026, %3040
  %3050 = fdiv <8 x double> %3049, %3043
  %3051 = select <8 x i1> %3037, <8 x double> zeroinitializer, <8 x double> %3050
  %3052 = select <8 x i1> %3037, <8 x double> zeroinitializer, <8 x double> %3048
  %3053 = fcmp ule <8 x double> %3028, zeroinitializer
  %3054 = load <8 x double>, ptr %217, align 64, !tbaa !26, !noalias !112
  %3055 = fmul <8 x double> %3028, %3054
  %3056 = select <8 x i1> %3053, <8 x double> zeroinitializer, <8 x double> %3055
  %3057 = fadd <8 x double> %3056, %3051
  %3058 = select <8 x i1> %3053, <8 x double> zeroinitializer, <8 x double> %3054
  %3059 = fadd <8 x double> %3058, %3052
  %3060 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %3061 = fsub <8 x double> %3025, %2691
  %3062 = fcmp ule <8 x double> %3061, zeroinitializer
  %3063 = fcmp ule <8 x double> %3060, zeroinitializer
  %3064 = or <8 x i1> %3062, %3063
  %3065 = fmul <8 x double> %2684, %3060
  %3066 = fadd <8 x double> %3061, splat (double 2.000000e+02)
  %3067 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3066)
  %3068 = select <8 x i1> %3062, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3067
  %3069 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3061, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %3070 = fmul <8 x double> %3069, %3065
  %3071 = fmul <8 x double> %3068, %3068
  %3072 = fmul <8 x double> %3068, %3071
  %3073 = fdiv <8 x double> %3070, %3072
  %3074 = fmul <8 x double> %3061, %3065
  %3075 = fdiv <8 x double> %3074, %3068
  %3076 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !115
  %3077 = load <8 x double>, ptr %203, align 64, !tbaa !26, !noalias !115
  %3078 = load <8 x double>, ptr %187, align 64, !tbaa !26, !noalias !115
  %3079 = load <8 x double>, ptr %204, align 64, !tbaa !26, !noalias !115
  %3080 = fmul <8 x double> %3078, %3079
  %3081 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3076, <8 x double> %3077, <8 x double> %3080)
  %3082 = load <8 x double>, ptr %207, align 64, !tbaa !26, !noalias !115
  %3083 = load <8 x double>, ptr %185, align 64, !tbaa !26, !noalias !115
  %3084 = load <8 x double>, ptr %205, align 64, !tbaa !26, !noalias !115
  %3085 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3082, <8 x double> %3083, <8 x double> %3084)
  %3086 = load <8 x double>, ptr %206, align 64, !tbaa !26, !noalias !115
  %3087 = fneg <8 x double> %3081
  %3088 = fmul <8 x double> %3082, %3087
  %3089 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3084, <8 x double> %3086, <8 x double> %3088)
  %3090 = fdiv <8 x double> %3089, %3085
  %3091 = fcmp ogt <8 x double> %3017, splat (double 2.000000e+03)
  %3092 = select <8 x i1> %3091, <8 x double> %3017, <8 x double> splat (double 2.000000e+03)
  %3093 = fmul <8 x double> %3092, splat (double 0x3EB0C6F7A0B5ED8D)
  %3094 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3093)
  %3095 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3094)
  %3096 = fmul <8 x double> %3095, %3095
  %3097 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3095, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %3096)
  %3098 = fadd <8 x double> %3097, splat (double 0x402DD4891DBECC6B)
  %3099 = fmul <8 x double> %3095, splat (double 0x40C77A698FD9BCCA)
  %3100 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3096, <8 x double> splat (double 0x40923C3565924845), <8 x double> %3099)
  %3101 = fadd <8 x double> %3100, splat (double 0xC0B2D7440748F0B3)
  %3102 = fmul <8 x double> %3095, splat (double 0xC148A99584203885)
  %3103 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3096, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %3102)
  %3104 = fadd <8 x double> %3103, splat (double 0x4118B9E59F2691E5)
  %3105 = fmul <8 x double> %3104, splat (double 2.000000e+00)
  %3106 = fneg <8 x double> %3101
  %3107 = fmul <8 x double> %3098, splat (double 4.000000e+00)
  %3108 = fneg <8 x double> %3104
  %3109 = fmul <8 x double> %3107, %3108
  %3110 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3101, <8 x double> %3101, <8 x double> %3109)
  %3111 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3110)
  %3112 = fsub <8 x double> %3106, %3111
  %3113 = fdiv <8 x double> %3105, %3112
  %3114 = fadd <8 x double> %3113, splat (double 0x408451671D164BD4)
  %3115 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3113, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %3116 = fmul <8 x double> %3115, splat (double -4.000000e+00)
  %3117 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3114, <8 x double> %3114, <8 x double> %3116)
  %3118 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %3117)
  %3119 = fsub <8 x double> %3114, %3118
  %3120 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3119, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %3121 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3120, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3122 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3120, <8 x double> %3121, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3123 = fadd <8 x double> %3120, splat (double 2.731500e+02)
  %3124 = fcmp ule <8 x double> %3120, %3090
  %3125 = load <8 x double>, ptr %219, align 64, !tbaa !26, !noalias !115
  %3126 = fmul <8 x double> %3085, %3125
  %3127 = fadd <8 x double> %3085, %3125
  %3128 = fdiv <8 x double> %3126, %3127
  %3129 = fdiv <8 x double> %3128, %3122
  %3130 = fmul <8 x double> %3123, splat (double 4.615260e+02)
  %3131 = fmul <8 x double> %3092, %3122
  %3132 = fmul <8 x double> %3120, %3125
  %3133 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3090, <8 x double> %3085, <8 x double> %3132)
  %3134 = fdiv <8 x double> %3133, %3127
  %3135 = select <8 x i1> %3124, <8 x double> %3090, <8 x double> %3134
  store <8 x double> %3135, ptr %209, align 64, !tbaa !26, !noalias !115
  %3136 = fsub <8 x double> %3120, %3090
  %3137 = fmul <8 x double> %3136, %3129
  %3138 = select <8 x i1> %3124, <8 x double> zeroinitializer, <8 x double> %3137
  %3139 = fmul <8 x double> %3018, splat (double 4.615260e+02)
  %3140 = fmul <8 x double> %3018, %3139
  %3141 = fmul <8 x double> %2691, %2722
  %3142 = fdiv <8 x double> %3140, %3141
  %3143 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3083, <8 x double> %2691, <8 x double> %2666)
  %3144 = fsub <8 x double> %3013, %3138
  %3145 = fmul <8 x double> %3144, splat (double -4.615260e+02)
  %3146 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2669, <8 x double> %3143, <8 x double> %3145)
  %3147 = fmul <8 x double> %3075, splat (double -2.870530e+02)
  %3148 = select <8 x i1> %3064, <8 x double> splat (double -0.000000e+00), <8 x double> %3147
  %3149 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3024, <8 x double> %3057, <8 x double> %3148)
  %3150 = fadd <8 x double> %3149, %3146
  %3151 = fneg <8 x double> %3123
  %3152 = fmul <8 x double> %3130, %3151
  %3153 = fdiv <8 x double> %3152, %3131
  %3154 = fmul <8 x double> %3153, %3129
  %3155 = select <8 x i1> %3124, <8 x double> splat (double -0.000000e+00), <8 x double> %3154
  %3156 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3014, <8 x double> %3142, <8 x double> %3155)
  %3157 = fmul <8 x double> %3156, splat (double -4.615260e+02)
  %3158 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2669, <8 x double> %3083, <8 x double> %3157)
  %3159 = fmul <8 x double> %3073, splat (double 2.870530e+02)
  %3160 = select <8 x i1> %3064, <8 x double> zeroinitializer, <8 x double> %3159
  %3161 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3024, <8 x double> %3059, <8 x double> %3160)
  %3162 = fadd <8 x double> %3161, %3158
  %3163 = fcmp ule <8 x double> %3150, zeroinitializer
  %3164 = fcmp olt <8 x double> %2688, %2691
  %3165 = select <8 x i1> %3163, <8 x i1> splat (i1 true), <8 x i1> %3164
  %3166 = select <8 x i1> %3165, <8 x double> %2688, <8 x double> %2691
  %3167 = fcmp ogt <8 x double> %2687, %2691
  %3168 = select <8 x i1> %3167, <8 x double> %2687, <8 x double> %2691
  %3169 = select <8 x i1> %3163, <8 x double> %3168, <8 x double> %2687
  %3170 = fdiv <8 x double> %3150, %3162
  %3171 = fsub <8 x double> %2691, %3170
  %3172 = fsub <8 x double> %3171, %2691
  %3173 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3172)
  %3174 = fcmp uge <8 x double> %3173, splat (double 2.000000e-01)
  %3175 = fcmp uge <8 x double> %3169, %3171
  %3176 = fcmp uge <8 x double> %3171, %3166
  %3177 = or <8 x i1> %3175, %3176
  %3178 = and <8 x i1> %3174, %3177
  %3179 = fadd <8 x double> %3169, %3166
  %3180 = fmul <8 x double> %3179, splat (double 5.000000e-01)
  %3181 = select <8 x i1> %3178, <8 x double> %3180, <8 x double> %3171
  %3182 = fsub <8 x double> %3181, %2691
  %3183 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3182)
  %3184 = fcmp oge <8 x double> %3183, splat (double 2.000000e-01)
  %3185 = select <8 x i1> %3184, <8 x i64> %2689, <8 x i64> zeroinitializer
  %3186 = icmp eq <8 x i64> %3185, zeroinitializer
  %3187 = select <8 x i1> %3186, <8 x double> %2691, <8 x double> %3181
  %3188 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3185)
  %3189 = icmp ne i64 %3188, 0
  %3190 = add nuw nsw i32 %2690, 1
  %3191 = icmp samesign ult i32 %2690, 59
  %3192 = select i1 %3189, i1 %3191, i1 false
  br i1 %3192, label %2685, label %3193, !llvm.loop !118

3193:                                             ; preds = %3012
  %3194 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3195 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %3196 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3197 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %3198 = fmul <8 x double> %3196, %3197
  %3199 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3194, <8 x double> %3195, <8 x double> %3198)
  %3200 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %3201 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %3202 = fsub <8 x double> %3201, %3187
  %3203 = fcmp ule <8 x double> %3202, zeroinitializer
  %3204 = fcmp ule <8 x double> %3200, zeroinitializer
  %3205 = or <8 x i1> %3204, %3203
  %3206 = fmul <8 x double> %2684, %3200
  %3207 = fadd <8 x double> %3202, splat (double 2.000000e+02)
  %3208 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %3207)
  %3209 = select <8 x i1> %3203, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %3208
  %3210 = fmul <8 x double> %3206, %3202
  %3211 = fdiv <8 x double> %3210, %3209
  %3212 = fmul <8 x double> %3211, splat (double 2.870530e+02)
  %3213 = select <8 x i1> %3205, <8 x double> zeroinitializer, <8 x double> %3212
  %3214 = fdiv <8 x double> %3213, %2669
  %3215 = fsub <8 x double> %3214, %3199
  %3216 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3217 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %3218 = fmul <8 x double> %3022, %3217
  %3219 = fdiv <8 x double> %3057, %3218
  %3220 = fadd <8 x double> %3216, %3219
  %3221 = fdiv <8 x double> %3215, %3220
  %3222 = fcmp ogt <8 x double> %3221, zeroinitializer
  %3223 = select <8 x i1> %3222, <8 x double> %3221, <8 x double> zeroinitializer
  %3224 = fcmp olt <8 x double> %3223, %3187
  %3225 = select <8 x i1> %3224, <8 x double> %3223, <8 x double> %3187
  %3226 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %3227 = select <8 x i1> %2680, <8 x double> %3226, <8 x double> %3225
  store <8 x double> %3227, ptr %208, align 64, !tbaa !26
  %3228 = select <8 x i1> %2680, <8 x double> %2657, <8 x double> %3135
  store <8 x double> %3228, ptr %209, align 64, !tbaa !26
  store <8 x double> %3187, ptr %202, align 64, !tbaa !26
  store <8 x double> %2720, ptr %222, align 64, !tbaa !26
  %3229 = load i64, ptr %179, align 8, !tbaa !20
  br label %3502

3230:                                             ; preds = %2636
  store <8 x double> %2638, ptr %222, align 64, !tbaa !26
  %3231 = icmp sgt i64 %2386, 0
  br i1 %3231, label %3232, label %3505

3232:                                             ; preds = %3230
  %3233 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2638, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3234 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2638, <8 x double> %3233, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3235 = fdiv <8 x double> splat (double 1.000000e+00), %3234
  br label %3236

3236:                                             ; preds = %3232, %3498
  %3237 = phi i64 [ 0, %3232 ], [ %3499, %3498 ]
  %3238 = load ptr, ptr %152, align 8, !tbaa !28, !noalias !119
  %3239 = getelementptr inbounds nuw %struct.Piece, ptr %3238, i64 %3237
  %3240 = getelementptr inbounds nuw i8, ptr %3239, i64 6208
  %3241 = load <8 x double>, ptr %3240, align 64, !tbaa !26, !noalias !119
  %3242 = getelementptr inbounds nuw i8, ptr %3239, i64 6272
  %3243 = load <8 x double>, ptr %3242, align 64, !tbaa !26, !noalias !119
  %3244 = getelementptr inbounds nuw i8, ptr %3239, i64 7616
  %3245 = load <8 x double>, ptr %3244, align 64, !tbaa !26, !noalias !119
  %3246 = fcmp ule <8 x double> %3245, splat (double 1.000000e+00)
  %3247 = fmul <8 x double> %2638, %3243
  %3248 = fcmp ogt <8 x double> %3241, %3247
  %3249 = and <8 x i1> %3246, %3248
  %3250 = fneg <8 x double> %3243
  %3251 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3250, <8 x double> %2638, <8 x double> %3241)
  %3252 = fmul <8 x double> %3235, %3251
  %3253 = select <8 x i1> %3249, <8 x double> %3252, <8 x double> zeroinitializer
  %3254 = xor <8 x i1> %3249, splat (i1 true)
  %3255 = bitcast <8 x i1> %3254 to i8
  %3256 = icmp eq i8 %3255, 0
  br i1 %3256, label %3260, label %3257

3257:                                             ; preds = %3236
  %3258 = fdiv <8 x double> %3241, %3243
  %3259 = select <8 x i1> %3249, <8 x double> %2638, <8 x double> %3258
  br label %3260

3260:                                             ; preds = %3257, %3236
  %3261 = phi <8 x double> [ %3259, %3257 ], [ %2638, %3236 ]
  %3262 = getelementptr inbounds nuw i8, ptr %3239, i64 8448
  %3263 = load <8 x i64>, ptr %3262, align 64, !tbaa !26, !noalias !119
  %3264 = getelementptr inbounds nuw i8, ptr %3239, i64 2240
  %3265 = load <8 x double>, ptr %3264, align 64, !tbaa !26, !noalias !119
  %3266 = fcmp ogt <8 x double> %3265, zeroinitializer
  %3267 = select <8 x i1> %3246, <8 x i1> %3266, <8 x i1> zeroinitializer
  %3268 = select <8 x i1> %3267, <8 x i64> %3263, <8 x i64> zeroinitializer
  %3269 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3268)
  %3270 = icmp eq i64 %3269, 0
  br i1 %3270, label %3281, label %3271

3271:                                             ; preds = %3260
  %3272 = getelementptr inbounds nuw i8, ptr %3239, i64 6336
  %3273 = load <8 x double>, ptr %3272, align 64, !tbaa !26, !noalias !119
  %3274 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3250, <8 x double> %3273, <8 x double> %3241)
  %3275 = fcmp ogt <8 x double> %3274, zeroinitializer
  %3276 = select <8 x i1> %3275, <8 x double> %3274, <8 x double> zeroinitializer
  %3277 = fmul <8 x double> %3235, %3276
  %3278 = icmp eq <8 x i64> %3268, zeroinitializer
  %3279 = select <8 x i1> %3278, <8 x double> %3253, <8 x double> %3277
  %3280 = select <8 x i1> %3278, <8 x double> %3261, <8 x double> %3273
  br label %3281

3281:                                             ; preds = %3271, %3260
  %3282 = phi <8 x double> [ %3280, %3271 ], [ %3261, %3260 ]
  %3283 = phi <8 x double> [ %3279, %3271 ], [ %3253, %3260 ]
  %3284 = getelementptr inbounds nuw i8, ptr %3239, i64 6016
  store <8 x double> %3283, ptr %3284, align 64, !tbaa !26, !noalias !119
  %3285 = getelementptr inbounds nuw i8, ptr %3239, i64 5952
  store <8 x double> %3282, ptr %3285, align 64, !tbaa !26, !noalias !119
  %3286 = getelementptr inbounds nuw i8, ptr %3239, i64 6080
  store <8 x double> zeroinitializer, ptr %3286, align 64, !tbaa !26, !noalias !119
  %3287 = load i64, ptr %141, align 16, !tbaa !21, !noalias !119
  %3288 = sitofp i64 %3287 to double
  %3289 = insertelement <8 x double> poison, double %3288, i64 0
  %3290 = shufflevector <8 x double> %3289, <8 x double> poison, <8 x i32> zeroinitializer
  %3291 = getelementptr inbounds nuw i8, ptr %3239, i64 6144
  store <8 x double> %3290, ptr %3291, align 64, !tbaa !26, !noalias !119
  %3292 = getelementptr inbounds nuw i8, ptr %3239, i64 7872
  %3293 = getelementptr inbounds nuw i8, ptr %3239, i64 8128
  %3294 = load <8 x double>, ptr %3293, align 64, !tbaa !26, !noalias !122
  %3295 = fcmp ole <8 x double> %2638, %3294
  %3296 = getelementptr inbounds nuw i8, ptr %3239, i64 8192
  %3297 = load <8 x double>, ptr %3296, align 64, !tbaa !26, !noalias !122
  %3298 = fcmp oge <8 x double> %2638, %3297
  %3299 = or <8 x i1> %3295, %3298
  %3300 = bitcast <8 x i1> %3299 to i8
  %3301 = icmp eq i8 %3300, 0
  br i1 %3301, label %3302, label %3305

3302:                                             ; preds = %3281
  %3303 = getelementptr inbounds nuw i8, ptr %3239, i64 8000
  %3304 = load <8 x double>, ptr %3303, align 64, !tbaa !26, !noalias !122
  br label %3427

3305:                                             ; preds = %3281
  %3306 = load i64, ptr %141, align 16, !tbaa !21, !noalias !125
  %3307 = sitofp i64 %3306 to double
  %3308 = insertelement <8 x double> poison, double %3307, i64 0
  %3309 = shufflevector <8 x double> %3308, <8 x double> poison, <8 x i32> zeroinitializer
  %3310 = icmp sgt i64 %3306, 0
  br i1 %3310, label %3311, label %3402

3311:                                             ; preds = %3305
  %3312 = sext <8 x i1> %3299 to <8 x i64>
  %3313 = getelementptr inbounds nuw i8, ptr %3239, i64 8632
  %3314 = load ptr, ptr %3313, align 8, !tbaa !89, !noalias !125
  %3315 = getelementptr inbounds nuw i8, ptr %3239, i64 8640
  %3316 = load ptr, ptr %3315, align 64, !tbaa !90, !noalias !125
  %3317 = getelementptr inbounds nuw i8, ptr %3239, i64 8512
  %3318 = load i64, ptr %3317, align 64, !tbaa !31, !noalias !125
  %3319 = getelementptr inbounds nuw i8, ptr %3239, i64 8656
  %3320 = getelementptr inbounds nuw i8, ptr %3239, i64 8648
  %3321 = getelementptr inbounds nuw i8, ptr %3239, i64 8664
  br label %3322

3322:                                             ; preds = %3311, %3370
  %3323 = phi <8 x i64> [ %3312, %3311 ], [ %3342, %3370 ]
  %3324 = phi i64 [ %3306, %3311 ], [ %3332, %3370 ]
  %3325 = phi <8 x double> [ splat (double 1.000000e+09), %3311 ], [ %3385, %3370 ]
  %3326 = phi <8 x double> [ zeroinitializer, %3311 ], [ %3389, %3370 ]
  %3327 = phi <8 x double> [ splat (double 1.000000e+09), %3311 ], [ %3367, %3370 ]
  %3328 = phi <8 x double> [ splat (double 1.000000e+00), %3311 ], [ %3366, %3370 ]
  %3329 = phi <8 x double> [ %3309, %3311 ], [ %3393, %3370 ]
  %3330 = phi <8 x double> [ zeroinitializer, %3311 ], [ %3382, %3370 ]
  %3331 = phi <8 x double> [ zeroinitializer, %3311 ], [ %3380, %3370 ]
  %3332 = add nsw i64 %3324, -1
  %3333 = getelementptr inbounds nuw <8 x double>, ptr %3314, i64 %3332
  %3334 = load <8 x double>, ptr %3333, align 64, !tbaa !26, !noalias !125
  %3335 = getelementptr inbounds nuw <8 x double>, ptr %3316, i64 %3332
  %3336 = load <8 x double>, ptr %3335, align 64, !tbaa !26, !noalias !125
  %3337 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3336, <8 x double> %2638, <8 x double> %3334)
  %3338 = fsub <8 x double> %3337, %2638
  %3339 = fcmp ogt <8 x double> %3338, splat (double 1.000000e-09)
  %3340 = select <8 x i1> %3339, <8 x i64> %3323, <8 x i64> zeroinitializer
  %3341 = icmp sgt i64 %3324, %3318
  %3342 = select i1 %3341, <8 x i64> %3340, <8 x i64> zeroinitializer
  %3343 = icmp slt i64 %3324, %3306
  br i1 %3343, label %3344, label %3356

3344:                                             ; preds = %3322
  %3345 = load ptr, ptr %3319, align 16, !tbaa !87, !noalias !125
  %3346 = getelementptr inbounds nuw <8 x double>, ptr %3345, i64 %3324
  %3347 = load <8 x double>, ptr %3346, align 64, !tbaa !26, !noalias !125
  %3348 = fmul <8 x double> %3338, %3347
  %3349 = icmp eq <8 x i64> %3342, %3323
  %3350 = select <8 x i1> %3349, <8 x double> zeroinitializer, <8 x double> %3348
  %3351 = fadd <8 x double> %3331, %3350
  %3352 = fadd <8 x double> %3336, splat (double -1.000000e+00)
  %3353 = fmul <8 x double> %3352, %3347
  %3354 = select <8 x i1> %3349, <8 x double> zeroinitializer, <8 x double> %3353
  %3355 = fadd <8 x double> %3330, %3354
  br label %3356

3356:                                             ; preds = %3344, %3322
  %3357 = phi <8 x double> [ %3351, %3344 ], [ %3331, %3322 ]
  %3358 = phi <8 x double> [ %3355, %3344 ], [ %3330, %3322 ]
  br i1 %3341, label %3359, label %3365

3359:                                             ; preds = %3356
  %3360 = fneg <8 x double> %3338
  %3361 = icmp eq <8 x i64> %3342, %3323
  %3362 = select <8 x i1> %3361, <8 x double> %3327, <8 x double> %3360
  %3363 = fsub <8 x double> splat (double 1.000000e+00), %3336
  %3364 = select <8 x i1> %3361, <8 x double> %3328, <8 x double> %3363
  br label %3365

3365:                                             ; preds = %3359, %3356
  %3366 = phi <8 x double> [ %3364, %3359 ], [ %3328, %3356 ]
  %3367 = phi <8 x double> [ %3362, %3359 ], [ %3327, %3356 ]
  %3368 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3342)
  %3369 = icmp eq i64 %3368, 0
  br i1 %3369, label %3395, label %3370

3370:                                             ; preds = %3365
  %3371 = load ptr, ptr %3320, align 8, !tbaa !86, !noalias !125
  %3372 = getelementptr inbounds nuw <8 x double>, ptr %3371, i64 %3332
  %3373 = load <8 x double>, ptr %3372, align 64, !tbaa !26, !noalias !125
  %3374 = load ptr, ptr %3321, align 8, !tbaa !88, !noalias !125
  %3375 = getelementptr inbounds nuw <8 x double>, ptr %3374, i64 %3332
  %3376 = load <8 x double>, ptr %3375, align 64, !tbaa !26, !noalias !125
  %3377 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3376, <8 x double> %2638, <8 x double> %3373)
  %3378 = icmp eq <8 x i64> %3342, zeroinitializer
  %3379 = select <8 x i1> %3378, <8 x double> zeroinitializer, <8 x double> %3377
  %3380 = fadd <8 x double> %3357, %3379
  %3381 = select <8 x i1> %3378, <8 x double> zeroinitializer, <8 x double> %3376
  %3382 = fadd <8 x double> %3358, %3381
  %3383 = fcmp olt <8 x double> %3325, %3338
  %3384 = select <8 x i1> %3378, <8 x i1> splat (i1 true), <8 x i1> %3383
  %3385 = select <8 x i1> %3384, <8 x double> %3325, <8 x double> %3338
  %3386 = fsub <8 x double> splat (double 1.000000e+00), %3336
  %3387 = fcmp ogt <8 x double> %3326, %3386
  %3388 = select <8 x i1> %3378, <8 x i1> splat (i1 true), <8 x i1> %3387
  %3389 = select <8 x i1> %3388, <8 x double> %3326, <8 x double> %3386
  %3390 = uitofp nneg i64 %3332 to double
  %3391 = insertelement <8 x double> poison, double %3390, i64 0
  %3392 = shufflevector <8 x double> %3391, <8 x double> poison, <8 x i32> zeroinitializer
  %3393 = select <8 x i1> %3378, <8 x double> %3329, <8 x double> %3392
  %3394 = icmp samesign ugt i64 %3324, 1
  br i1 %3394, label %3322, label %3395, !llvm.loop !110

3395:                                             ; preds = %3365, %3370
  %3396 = phi <8 x double> [ %3393, %3370 ], [ %3329, %3365 ]
  %3397 = phi <8 x double> [ %3389, %3370 ], [ %3326, %3365 ]
  %3398 = phi <8 x double> [ %3385, %3370 ], [ %3325, %3365 ]
  %3399 = phi <8 x double> [ %3380, %3370 ], [ %3357, %3365 ]
  %3400 = phi <8 x double> [ %3382, %3370 ], [ %3358, %3365 ]
  %3401 = fdiv <8 x double> %3367, %3366
  br label %3402

3402:                                             ; preds = %3395, %3305
  %3403 = phi <8 x double> [ %3309, %3305 ], [ %3396, %3395 ]
  %3404 = phi <8 x double> [ zeroinitializer, %3305 ], [ %3397, %3395 ]
  %3405 = phi <8 x double> [ splat (double 1.000000e+09), %3305 ], [ %3398, %3395 ]
  %3406 = phi <8 x double> [ zeroinitializer, %3305 ], [ %3399, %3395 ]
  %3407 = phi <8 x double> [ zeroinitializer, %3305 ], [ %3400, %3395 ]
  %3408 = phi <8 x double> [ splat (double 1.000000e+09), %3305 ], [ %3401, %3395 ]
  %3409 = fsub <8 x double> %2638, %3408
  %3410 = fcmp ogt <8 x double> %3404, splat (double 1.000000e-09)
  %3411 = select <8 x i1> %3410, <8 x double> %3404, <8 x double> splat (double 1.000000e-09)
  %3412 = fdiv <8 x double> %3405, %3411
  %3413 = fadd <8 x double> %2638, %3412
  %3414 = load <8 x double>, ptr %3292, align 64, !tbaa !26, !noalias !122
  %3415 = select <8 x i1> %3299, <8 x double> %3406, <8 x double> %3414
  store <8 x double> %3415, ptr %3292, align 64, !tbaa !26, !noalias !122
  %3416 = getelementptr inbounds nuw i8, ptr %3239, i64 7936
  %3417 = load <8 x double>, ptr %3416, align 64, !tbaa !26, !noalias !122
  %3418 = select <8 x i1> %3299, <8 x double> %3407, <8 x double> %3417
  store <8 x double> %3418, ptr %3416, align 64, !tbaa !26, !noalias !122
  %3419 = getelementptr inbounds nuw i8, ptr %3239, i64 8000
  %3420 = load <8 x double>, ptr %3419, align 64, !tbaa !26, !noalias !122
  %3421 = select <8 x i1> %3299, <8 x double> %3403, <8 x double> %3420
  store <8 x double> %3421, ptr %3419, align 64, !tbaa !26, !noalias !122
  %3422 = getelementptr inbounds nuw i8, ptr %3239, i64 8064
  %3423 = load <8 x double>, ptr %3422, align 64, !tbaa !26, !noalias !122
  %3424 = select <8 x i1> %3299, <8 x double> %2638, <8 x double> %3423
  store <8 x double> %3424, ptr %3422, align 64, !tbaa !26, !noalias !122
  %3425 = select <8 x i1> %3299, <8 x double> %3409, <8 x double> %3294
  store <8 x double> %3425, ptr %3293, align 64, !tbaa !26, !noalias !122
  %3426 = select <8 x i1> %3299, <8 x double> %3413, <8 x double> %3297
  store <8 x double> %3426, ptr %3296, align 64, !tbaa !26, !noalias !122
  br label %3427

3427:                                             ; preds = %3302, %3402
  %3428 = phi <8 x double> [ %3304, %3302 ], [ %3421, %3402 ]
  %3429 = load i64, ptr %141, align 16, !tbaa !21, !noalias !119
  %3430 = sitofp i64 %3429 to double
  %3431 = insertelement <8 x double> poison, double %3430, i64 0
  %3432 = shufflevector <8 x double> %3431, <8 x double> poison, <8 x i32> zeroinitializer
  %3433 = fcmp olt <8 x double> %3428, %3432
  %3434 = and <8 x i1> %3246, %3433
  %3435 = bitcast <8 x i1> %3434 to i8
  %3436 = icmp eq i8 %3435, 0
  br i1 %3436, label %3498, label %3437

3437:                                             ; preds = %3427
  %3438 = getelementptr inbounds nuw i8, ptr %3239, i64 7936
  %3439 = load <8 x double>, ptr %3438, align 64, !tbaa !26, !noalias !122
  %3440 = getelementptr inbounds nuw i8, ptr %3239, i64 8064
  %3441 = load <8 x double>, ptr %3440, align 64, !tbaa !26, !noalias !122
  %3442 = fsub <8 x double> %2638, %3441
  %3443 = load <8 x double>, ptr %3292, align 64, !tbaa !26, !noalias !122
  %3444 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3439, <8 x double> %3442, <8 x double> %3443)
  %3445 = getelementptr inbounds nuw i8, ptr %3239, i64 6464
  %3446 = load <8 x double>, ptr %3445, align 64, !tbaa !26, !noalias !119
  %3447 = getelementptr inbounds nuw i8, ptr %3239, i64 5888
  %3448 = load <8 x double>, ptr %3447, align 64, !tbaa !26, !noalias !119
  %3449 = getelementptr inbounds nuw i8, ptr %3239, i64 7424
  %3450 = load <8 x double>, ptr %3449, align 64, !tbaa !26, !noalias !119
  %3451 = fneg <8 x double> %3450
  %3452 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3446, <8 x double> %3448, <8 x double> %3451)
  %3453 = getelementptr inbounds nuw i8, ptr %3239, i64 7360
  %3454 = load <8 x double>, ptr %3453, align 64, !tbaa !26, !noalias !119
  %3455 = fadd <8 x double> %3446, %3454
  %3456 = getelementptr inbounds nuw i8, ptr %3239, i64 8320
  %3457 = load <8 x i64>, ptr %3456, align 64, !tbaa !26, !noalias !119
  %3458 = getelementptr inbounds nuw i8, ptr %3239, i64 8736
  %3459 = load ptr, ptr %3458, align 32, !tbaa !95, !noalias !119
  %3460 = load <8 x double>, ptr %3459, align 64, !tbaa !26, !noalias !119
  %3461 = fmul <8 x double> %3446, %3460
  %3462 = icmp eq <8 x i64> %3457, zeroinitializer
  %3463 = select <8 x i1> %3462, <8 x double> %3452, <8 x double> %3461
  %3464 = getelementptr inbounds nuw i8, ptr %3239, i64 8744
  %3465 = load ptr, ptr %3464, align 8, !tbaa !96, !noalias !119
  %3466 = load <8 x double>, ptr %3465, align 64, !tbaa !26, !noalias !119
  %3467 = fsub <8 x double> splat (double 1.000000e+00), %3466
  %3468 = fmul <8 x double> %3446, %3467
  %3469 = select <8 x i1> %3462, <8 x double> %3455, <8 x double> %3468
  %3470 = fneg <8 x double> %3469
  %3471 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3470, <8 x double> %2638, <8 x double> %3463)
  %3472 = fcmp ogt <8 x double> %3444, zeroinitializer
  %3473 = fcmp oge <8 x double> %3471, zeroinitializer
  %3474 = and <8 x i1> %3472, %3473
  %3475 = and <8 x i1> %3434, %3474
  %3476 = sext <8 x i1> %3475 to <8 x i64>
  %3477 = xor <8 x i64> %3476, splat (i64 -1)
  %3478 = fadd <8 x double> %3444, %3471
  %3479 = fcmp ogt <8 x double> %3478, zeroinitializer
  %3480 = and <8 x i1> %3434, %3479
  %3481 = select <8 x i1> %3480, <8 x i64> %3477, <8 x i64> zeroinitializer
  %3482 = or <8 x i64> %3481, %3476
  %3483 = fmul <8 x double> %3235, %3471
  %3484 = select <8 x i1> %3475, <8 x double> %3483, <8 x double> zeroinitializer
  %3485 = icmp eq <8 x i64> %3482, zeroinitializer
  %3486 = select <8 x i1> %3485, <8 x double> %3283, <8 x double> %3484
  store <8 x double> %3486, ptr %3284, align 64, !tbaa !26, !noalias !119
  %3487 = select <8 x i1> %3485, <8 x double> %3282, <8 x double> %2638
  store <8 x double> %3487, ptr %3285, align 64, !tbaa !26, !noalias !119
  %3488 = fmul <8 x double> %3235, %3444
  %3489 = fmul <8 x double> %3235, %3478
  %3490 = icmp eq <8 x i64> %3481, zeroinitializer
  %3491 = select <8 x i1> %3490, <8 x double> zeroinitializer, <8 x double> %3489
  %3492 = select <8 x i1> %3475, <8 x double> %3488, <8 x double> %3491
  store <8 x double> %3492, ptr %3286, align 64, !tbaa !26, !noalias !119
  %3493 = load i64, ptr %141, align 16, !tbaa !21, !noalias !119
  %3494 = sitofp i64 %3493 to double
  %3495 = insertelement <8 x double> poison, double %3494, i64 0
  %3496 = shufflevector <8 x double> %3495, <8 x double> poison, <8 x i32> zeroinitializer
  %3497 = select <8 x i1> %3485, <8 x double> %3496, <8 x double> %3428
  store <8 x double> %3497, ptr %3291, align 64, !tbaa !26, !noalias !119
  br label %3498

3498:                                             ; preds = %3427, %3437
  %3499 = add nuw nsw i64 %3237, 1
  %3500 = load i64, ptr %179, align 8, !tbaa !20, !noalias !119
  %3501 = icmp slt i64 %3499, %3500
  br i1 %3501, label %3236, label %3502, !llvm.loop !111

3502:                                             ; preds = %3498, %3193
  %3503 = phi i64 [ %3229, %3193 ], [ %3500, %3498 ]
  %3504 = icmp sgt i64 %3503, 0
  br i1 %3504, label %3634, label %3505

3505:                                             ; preds = %3502, %3230
  %3506 = phi i64 [ %3503, %3502 ], [ %2386, %3230 ]
  %3507 = load <8 x double>, ptr %188, align 64, !tbaa !26
  br label %3535

3508:                                             ; preds = %3706
  %3509 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %3510 = icmp sgt i64 %3730, 0
  br i1 %3510, label %3511, label %3535

3511:                                             ; preds = %3508
  %3512 = load ptr, ptr %152, align 8, !tbaa !28
  br label %3513

3513:                                             ; preds = %3511, %3513
  %3514 = phi <8 x double> [ zeroinitializer, %3511 ], [ %3527, %3513 ]
  %3515 = phi <8 x double> [ zeroinitializer, %3511 ], [ %3532, %3513 ]
  %3516 = phi i64 [ 0, %3511 ], [ %3533, %3513 ]
  %3517 = getelementptr inbounds nuw %struct.Piece, ptr %3512, i64 %3516
  %3518 = getelementptr inbounds nuw i8, ptr %3517, i64 8448
  %3519 = load <8 x i64>, ptr %3518, align 64, !tbaa !26
  %3520 = getelementptr inbounds nuw i8, ptr %3517, i64 128
  %3521 = load <8 x double>, ptr %3520, align 64, !tbaa !26
  %3522 = getelementptr inbounds nuw i8, ptr %3517, i64 6720
  %3523 = load <8 x double>, ptr %3522, align 64, !tbaa !26
  %3524 = fmul <8 x double> %3521, %3523
  %3525 = icmp eq <8 x i64> %3519, zeroinitializer
  %3526 = select <8 x i1> %3525, <8 x double> %3524, <8 x double> zeroinitializer
  %3527 = fadd <8 x double> %3514, %3526
  %3528 = getelementptr inbounds nuw i8, ptr %3517, i64 6592
  %3529 = load <8 x double>, ptr %3528, align 64, !tbaa !26
  %3530 = fmul <8 x double> %3521, %3529
  %3531 = select <8 x i1> %3525, <8 x double> %3530, <8 x double> zeroinitializer
  %3532 = fadd <8 x double> %3515, %3531
  %3533 = add nuw nsw i64 %3516, 1
  %3534 = icmp eq i64 %3533, %3730
  br i1 %3534, label %3535, label %3513, !llvm.loop !128

3535:                                             ; preds = %3513, %3505, %3508
  %3536 = phi i1 [ false, %3508 ], [ false, %3505 ], [ true, %3513 ]
  %3537 = phi <8 x double> [ %3509, %3508 ], [ %3507, %3505 ], [ %3509, %3513 ]
  %3538 = phi i64 [ %3730, %3508 ], [ %3506, %3505 ], [ %3730, %3513 ]
  %3539 = phi <8 x double> [ zeroinitializer, %3508 ], [ zeroinitializer, %3505 ], [ %3532, %3513 ]
  %3540 = phi <8 x double> [ zeroinitializer, %3508 ], [ zeroinitializer, %3505 ], [ %3527, %3513 ]
  %3541 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %3542 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %3543 = fsub <8 x double> %3537, %3542
  %3544 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3541, <8 x double> %3543, <8 x double> %3540)
  %3545 = fadd <8 x double> %3539, %3541
  store <8 x double> %3544, ptr %224, align 64, !tbaa !26
  %3546 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %3547 = fcmp ule <8 x double> %3546, zeroinitializer
  %3548 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %3549 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3546, <8 x double> splat (double 5.000000e-01), <8 x double> %3548)
  %3550 = fsub <8 x double> %3549, %3537
  %3551 = fcmp ogt <8 x double> %3546, splat (double 1.000000e-30)
  %3552 = select <8 x i1> %3551, <8 x double> %3546, <8 x double> splat (double 1.000000e-30)
  %3553 = fdiv <8 x double> %3550, %3552
  %3554 = fcmp ogt <8 x double> %3553, zeroinitializer
  %3555 = select <8 x i1> %3554, <8 x double> %3553, <8 x double> zeroinitializer
  %3556 = fcmp olt <8 x double> %3555, splat (double 1.000000e+00)
  %3557 = select <8 x i1> %3556, <8 x double> %3555, <8 x double> splat (double 1.000000e+00)
  %3558 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %3559 = load <8 x i64>, ptr %166, align 64, !tbaa !26
  %3560 = icmp eq <8 x i64> %3559, zeroinitializer
  %3561 = select <8 x i1> %3560, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %3562 = select <8 x i1> %3547, <8 x double> %3561, <8 x double> %3557
  %3563 = fmul <8 x double> %3558, %3562
  %3564 = fcmp ule <8 x double> %3563, zeroinitializer
  %3565 = fcmp uge <8 x double> %3563, %3558
  %3566 = or <8 x i1> %3564, %3565
  %3567 = or <8 x i1> %3547, %3566
  %3568 = fdiv <8 x double> %3558, %3552
  %3569 = select <8 x i1> %3567, <8 x double> zeroinitializer, <8 x double> %3568
  %3570 = fadd <8 x double> %3545, %3569
  %3571 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %3572 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3573 = fdiv <8 x double> splat (double 2.000000e+00), %3572
  %3574 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %3575 = icmp eq <8 x i64> %3571, zeroinitializer
  %3576 = select <8 x i1> %3575, <8 x double> %3574, <8 x double> %3573
  %3577 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %3578 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %3579 = fmul <8 x double> %3577, %3578
  %3580 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %3581 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %3582 = fmul <8 x double> %3581, splat (double 5.000000e-01)
  %3583 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3582, <8 x double> %3577, <8 x double> %3580)
  %3584 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %3585 = fmul <8 x double> %3577, %3584
  %3586 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3579, <8 x double> %3583, <8 x double> %3585)
  %3587 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %3588 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3589 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %3590 = fmul <8 x double> %3578, %3589
  %3591 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3582, <8 x double> %3589, <8 x double> %3580)
  %3592 = fmul <8 x double> %3584, %3589
  %3593 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3590, <8 x double> %3591, <8 x double> %3592)
  %3594 = fmul <8 x double> %3588, %3593
  %3595 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3587, <8 x double> %3586, <8 x double> %3594)
  %3596 = fmul <8 x double> %3537, %3578
  %3597 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3582, <8 x double> %3537, <8 x double> %3580)
  %3598 = fmul <8 x double> %3537, %3584
  %3599 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3596, <8 x double> %3597, <8 x double> %3598)
  %3600 = fneg <8 x double> %3576
  %3601 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %3602 = fneg <8 x double> %3601
  %3603 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3600, <8 x double> %3586, <8 x double> %3602)
  %3604 = select <8 x i1> %3575, <8 x double> %3595, <8 x double> %3603
  %3605 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3576, <8 x double> %3599, <8 x double> %3604)
  %3606 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3581, <8 x double> %3537, <8 x double> %3580)
  %3607 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3578, <8 x double> %3606, <8 x double> %3584)
  %3608 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %3609 = fcmp une <8 x double> %3608, zeroinitializer
  %3610 = fadd <8 x double> %3544, %3605
  %3611 = fsub <8 x double> %3610, %3563
  %3612 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3576, <8 x double> %3607, <8 x double> %3570)
  %3613 = fdiv <8 x double> %3611, %3612
  %3614 = fsub <8 x double> %3537, %3613
  %3615 = select <8 x i1> %3609, <8 x double> %3537, <8 x double> %3614
  store <8 x double> %3615, ptr %188, align 64, !tbaa !26
  %3616 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %3617 = fneg <8 x double> %3587
  %3618 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3617, <8 x double> %3616, <8 x double> %3563)
  %3619 = load <8 x double>, ptr %226, align 64, !tbaa !26
  %3620 = fneg <8 x double> %3588
  %3621 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3620, <8 x double> %3619, <8 x double> %3618)
  %3622 = fdiv <8 x double> %3621, %3574
  %3623 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %3624 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3617, <8 x double> %3623, <8 x double> %3544)
  %3625 = load <8 x double>, ptr %228, align 64, !tbaa !26
  %3626 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3620, <8 x double> %3625, <8 x double> %3624)
  %3627 = fdiv <8 x double> %3626, %3574
  %3628 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3563, <8 x double> %3572, <8 x double> %3616)
  %3629 = select <8 x i1> %3575, <8 x double> %3622, <8 x double> %3628
  %3630 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %3631 = select <8 x i1> %3609, <8 x double> %3630, <8 x double> %3629
  store <8 x double> %3631, ptr %229, align 64, !tbaa !26
  %3632 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %3633 = select <8 x i1> %3609, <8 x double> %3632, <8 x double> %3627
  store <8 x double> %3633, ptr %230, align 64, !tbaa !26
  br i1 %3536, label %3732, label %4025

3634:                                             ; preds = %3502, %3706
  %3635 = phi i64 [ %3729, %3706 ], [ 0, %3502 ]
  %3636 = load ptr, ptr %152, align 8, !tbaa !28
  %3637 = getelementptr inbounds nuw %struct.Piece, ptr %3636, i64 %3635
  %3638 = getelementptr inbounds nuw i8, ptr %3637, i64 5952
  %3639 = load <8 x double>, ptr %3638, align 64, !tbaa !26
  %3640 = getelementptr inbounds nuw i8, ptr %3637, i64 6144
  %3641 = load <8 x double>, ptr %3640, align 64, !tbaa !26
  %3642 = getelementptr inbounds nuw i8, ptr %3637, i64 8632
  %3643 = load ptr, ptr %3642, align 8, !tbaa !89
  %3644 = getelementptr inbounds nuw i8, ptr %3637, i64 8640
  %3645 = load ptr, ptr %3644, align 64, !tbaa !90
  %3646 = getelementptr inbounds nuw i8, ptr %3637, i64 8584
  %3647 = load ptr, ptr %3646, align 8, !tbaa !60
  %3648 = load i64, ptr %141, align 16, !tbaa !21
  %3649 = icmp sgt i64 %3648, 0
  br i1 %3649, label %3665, label %3650

3650:                                             ; preds = %3665, %3634
  %3651 = getelementptr inbounds nuw i8, ptr %3637, i64 8320
  %3652 = load <8 x i64>, ptr %3651, align 64, !tbaa !26
  %3653 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3652)
  %3654 = icmp eq i64 %3653, 0
  %3655 = load i64, ptr %142, align 8, !tbaa !22
  %3656 = icmp sgt i64 %3655, 0
  br i1 %3654, label %3662, label %3657

3657:                                             ; preds = %3650
  br i1 %3656, label %3658, label %3706

3658:                                             ; preds = %3657
  %3659 = getelementptr inbounds nuw i8, ptr %3637, i64 8736
  %3660 = getelementptr inbounds nuw i8, ptr %3637, i64 8744
  %3661 = getelementptr inbounds nuw i8, ptr %3637, i64 8704
  br label %3681

3662:                                             ; preds = %3650
  br i1 %3656, label %3663, label %3706

3663:                                             ; preds = %3662
  %3664 = getelementptr inbounds nuw i8, ptr %3637, i64 8704
  br label %3699

3665:                                             ; preds = %3634, %3665
  %3666 = phi <8 x double> [ %3678, %3665 ], [ %3639, %3634 ]
  %3667 = phi i64 [ %3668, %3665 ], [ %3648, %3634 ]
  %3668 = add nsw i64 %3667, -1
  %3669 = uitofp nneg i64 %3668 to double
  %3670 = insertelement <8 x double> poison, double %3669, i64 0
  %3671 = shufflevector <8 x double> %3670, <8 x double> poison, <8 x i32> zeroinitializer
  %3672 = fcmp ugt <8 x double> %3641, %3671
  %3673 = getelementptr inbounds nuw <8 x double>, ptr %3643, i64 %3668
  %3674 = load <8 x double>, ptr %3673, align 64, !tbaa !26
  %3675 = getelementptr inbounds nuw <8 x double>, ptr %3645, i64 %3668
  %3676 = load <8 x double>, ptr %3675, align 64, !tbaa !26
  %3677 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3676, <8 x double> %3666, <8 x double> %3674)
  %3678 = select <8 x i1> %3672, <8 x double> %3677, <8 x double> %3639
  %3679 = getelementptr inbounds nuw <8 x double>, ptr %3647, i64 %3668
  store <8 x double> %3678, ptr %3679, align 64, !tbaa !26
  %3680 = icmp samesign ugt i64 %3667, 1
  br i1 %3680, label %3665, label %3650, !llvm.loop !129

3681:                                             ; preds = %3658, %3681
  %3682 = phi i64 [ 0, %3658 ], [ %3696, %3681 ]
  %3683 = phi <8 x double> [ %3639, %3658 ], [ %3693, %3681 ]
  %3684 = load <8 x i64>, ptr %3651, align 64, !tbaa !26
  %3685 = load ptr, ptr %3659, align 32, !tbaa !95
  %3686 = getelementptr inbounds nuw <8 x double>, ptr %3685, i64 %3682
  %3687 = load <8 x double>, ptr %3686, align 64, !tbaa !26
  %3688 = load ptr, ptr %3660, align 8, !tbaa !96
  %3689 = getelementptr inbounds nuw <8 x double>, ptr %3688, i64 %3682
  %3690 = load <8 x double>, ptr %3689, align 64, !tbaa !26
  %3691 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3690, <8 x double> %3683, <8 x double> %3687)
  %3692 = icmp eq <8 x i64> %3684, zeroinitializer
  %3693 = select <8 x i1> %3692, <8 x double> %3639, <8 x double> %3691
  %3694 = load ptr, ptr %3661, align 64, !tbaa !130
  %3695 = getelementptr inbounds nuw <8 x double>, ptr %3694, i64 %3682
  store <8 x double> %3693, ptr %3695, align 64, !tbaa !26
  %3696 = add nuw nsw i64 %3682, 1
  %3697 = load i64, ptr %142, align 8, !tbaa !22
  %3698 = icmp slt i64 %3696, %3697
  br i1 %3698, label %3681, label %3706, !llvm.loop !131

3699:                                             ; preds = %3663, %3699
  %3700 = phi i64 [ 0, %3663 ], [ %3703, %3699 ]
  %3701 = load ptr, ptr %3664, align 64, !tbaa !130
  %3702 = getelementptr inbounds nuw <8 x double>, ptr %3701, i64 %3700
  store <8 x double> %3639, ptr %3702, align 64, !tbaa !26
  %3703 = add nuw nsw i64 %3700, 1
  %3704 = load i64, ptr %142, align 8, !tbaa !22
  %3705 = icmp slt i64 %3703, %3704
  br i1 %3705, label %3699, label %3706, !llvm.loop !132

3706:                                             ; preds = %3681, %3699, %3657, %3662
  %3707 = phi <8 x double> [ %3639, %3662 ], [ %3639, %3657 ], [ %3639, %3699 ], [ %3693, %3681 ]
  %3708 = load <8 x i64>, ptr %3651, align 64, !tbaa !26
  %3709 = getelementptr inbounds nuw i8, ptr %3637, i64 6656
  %3710 = load <8 x double>, ptr %3709, align 64, !tbaa !26
  %3711 = icmp eq <8 x i64> %3708, zeroinitializer
  %3712 = select <8 x i1> %3711, <8 x double> zeroinitializer, <8 x double> %3710
  %3713 = fsub <8 x double> splat (double 1.000000e+00), %3712
  %3714 = getelementptr inbounds nuw i8, ptr %3637, i64 5888
  %3715 = load <8 x double>, ptr %3714, align 64, !tbaa !26
  %3716 = fmul <8 x double> %3712, %3715
  %3717 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3713, <8 x double> %3707, <8 x double> %3716)
  %3718 = getelementptr inbounds nuw i8, ptr %3637, i64 6848
  store <8 x double> %3717, ptr %3718, align 64, !tbaa !26
  %3719 = getelementptr inbounds nuw i8, ptr %3637, i64 6592
  %3720 = load <8 x double>, ptr %3719, align 64, !tbaa !26
  %3721 = fsub <8 x double> %3715, %3707
  %3722 = fmul <8 x double> %3721, %3720
  %3723 = getelementptr inbounds nuw i8, ptr %3637, i64 6720
  store <8 x double> %3722, ptr %3723, align 64, !tbaa !26
  %3724 = getelementptr inbounds nuw i8, ptr %3637, i64 3200
  %3725 = load <8 x double>, ptr %3724, align 64, !tbaa !26
  %3726 = fdiv <8 x double> %3722, %3725
  %3727 = fsub <8 x double> %3715, %3726
  %3728 = getelementptr inbounds nuw i8, ptr %3637, i64 6784
  store <8 x double> %3727, ptr %3728, align 64, !tbaa !26
  %3729 = add nuw nsw i64 %3635, 1
  %3730 = load i64, ptr %179, align 8, !tbaa !20
  %3731 = icmp slt i64 %3729, %3730
  br i1 %3731, label %3634, label %3508, !llvm.loop !133

3732:                                             ; preds = %3535, %3959
  %3733 = phi i64 [ %4022, %3959 ], [ 0, %3535 ]
  %3734 = phi <8 x double> [ %4021, %3959 ], [ zeroinitializer, %3535 ]
  %3735 = load ptr, ptr %152, align 8, !tbaa !28
  %3736 = getelementptr inbounds nuw %struct.Piece, ptr %3735, i64 %3733
  %3737 = getelementptr inbounds nuw i8, ptr %3736, i64 6016
  %3738 = load <8 x double>, ptr %3737, align 64, !tbaa !26
  %3739 = getelementptr inbounds nuw i8, ptr %3736, i64 6080
  %3740 = load <8 x double>, ptr %3739, align 64, !tbaa !26
  %3741 = fadd <8 x double> %3738, %3740
  %3742 = getelementptr inbounds nuw i8, ptr %3736, i64 5952
  %3743 = load <8 x double>, ptr %3742, align 64, !tbaa !26
  %3744 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %3745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3744, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3746 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3744, <8 x double> %3745, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3747 = getelementptr inbounds nuw i8, ptr %3736, i64 7168
  %3748 = load <8 x double>, ptr %3747, align 64, !tbaa !26
  %3749 = getelementptr inbounds nuw i8, ptr %3736, i64 1280
  %3750 = load <8 x double>, ptr %3749, align 64, !tbaa !26
  %3751 = fmul <8 x double> %3748, %3750
  %3752 = getelementptr inbounds nuw i8, ptr %3736, i64 6848
  %3753 = load <8 x double>, ptr %3752, align 64, !tbaa !26
  %3754 = fsub <8 x double> %3753, %3743
  %3755 = fmul <8 x double> %3751, %3754
  %3756 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3746, <8 x double> %3741, <8 x double> %3755)
  %3757 = getelementptr inbounds nuw i8, ptr %3736, i64 5696
  %3758 = load <8 x double>, ptr %3757, align 64, !tbaa !26, !noalias !134
  %3759 = getelementptr inbounds nuw i8, ptr %3736, i64 4160
  %3760 = load <8 x double>, ptr %3759, align 64, !tbaa !26, !noalias !134
  %3761 = fneg <8 x double> %3758
  %3762 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3761, <8 x double> %3760, <8 x double> %3741)
  %3763 = getelementptr inbounds nuw i8, ptr %3736, i64 5760
  %3764 = load <8 x double>, ptr %3763, align 64, !tbaa !26, !noalias !134
  %3765 = getelementptr inbounds nuw i8, ptr %3736, i64 5056
  %3766 = load <8 x double>, ptr %3765, align 64, !tbaa !26, !noalias !134
  %3767 = fneg <8 x double> %3764
  %3768 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3767, <8 x double> %3766, <8 x double> %3762)
  %3769 = getelementptr inbounds nuw i8, ptr %3736, i64 5824
  %3770 = load <8 x double>, ptr %3769, align 64, !tbaa !26, !noalias !134
  %3771 = fmul <8 x double> %3768, %3770
  %3772 = getelementptr inbounds nuw i8, ptr %3736, i64 1600
  %3773 = load <8 x double>, ptr %3772, align 64, !tbaa !26, !noalias !134
  %3774 = fsub <8 x double> %3773, %3771
  %3775 = getelementptr inbounds nuw i8, ptr %3736, i64 4032
  %3776 = load <8 x double>, ptr %3775, align 64, !tbaa !26, !noalias !134
  %3777 = getelementptr inbounds nuw i8, ptr %3736, i64 7488
  %3778 = load <8 x double>, ptr %3777, align 64, !tbaa !26, !noalias !134
  %3779 = fsub <8 x double> %3776, %3778
  %3780 = getelementptr inbounds nuw i8, ptr %3736, i64 3904
  %3781 = load <8 x double>, ptr %3780, align 64, !tbaa !26, !noalias !134
  %3782 = getelementptr inbounds nuw i8, ptr %3736, i64 2944
  %3783 = load <8 x double>, ptr %3782, align 64, !tbaa !26, !noalias !134
  %3784 = getelementptr inbounds nuw i8, ptr %3736, i64 8320
  %3785 = load <8 x i64>, ptr %3784, align 64, !tbaa !26, !noalias !134
  %3786 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3785)
  %3787 = icmp eq i64 %3786, 0
  br i1 %3787, label %3921, label %3788

3788:                                             ; preds = %3732
  %3789 = fcmp ogt <8 x double> %3779, %3774
  %3790 = getelementptr inbounds nuw i8, ptr %3736, i64 7616
  %3791 = load <8 x double>, ptr %3790, align 64, !tbaa !26, !noalias !134
  %3792 = fcmp oeq <8 x double> %3791, zeroinitializer
  %3793 = select <8 x i1> %3792, <8 x i1> %3789, <8 x i1> zeroinitializer
  %3794 = select <8 x i1> %3793, <8 x i64> %3785, <8 x i64> zeroinitializer
  %3795 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3794)
  %3796 = icmp eq i64 %3795, 0
  br i1 %3796, label %3869, label %3797

3797:                                             ; preds = %3788
  %3798 = fsub <8 x double> %3779, %3774
  %3799 = getelementptr inbounds nuw i8, ptr %3736, i64 7808
  %3800 = load <8 x double>, ptr %3799, align 64, !tbaa !26, !noalias !134
  %3801 = fmul <8 x double> %3798, %3800
  %3802 = getelementptr inbounds nuw i8, ptr %3736, i64 8616
  %3803 = load ptr, ptr %3802, align 8, !tbaa !67, !noalias !134
  %3804 = load i64, ptr %141, align 16, !tbaa !21, !noalias !134
  %3805 = add nsw i64 %3804, -1
  %3806 = getelementptr inbounds <8 x double>, ptr %3803, i64 %3805
  %3807 = load <8 x double>, ptr %3806, align 64, !tbaa !26, !noalias !134
  %3808 = icmp sgt i64 %3804, 1
  br i1 %3808, label %3809, label %3861

3809:                                             ; preds = %3797
  %3810 = getelementptr inbounds nuw i8, ptr %3736, i64 8512
  %3811 = load i64, ptr %3810, align 64, !tbaa !31, !noalias !134
  %3812 = getelementptr inbounds nuw i8, ptr %3736, i64 4672
  %3813 = getelementptr inbounds nuw i8, ptr %3736, i64 1536
  %3814 = getelementptr inbounds nuw i8, ptr %3736, i64 8672
  br label %3815

3815:                                             ; preds = %3809, %3858
  %3816 = phi <8 x double> [ %3781, %3809 ], [ %3853, %3858 ]
  %3817 = phi i64 [ %3805, %3809 ], [ %3859, %3858 ]
  %3818 = phi <8 x double> [ %3807, %3809 ], [ %3841, %3858 ]
  %3819 = phi <8 x i64> [ %3794, %3809 ], [ %3845, %3858 ]
  %3820 = phi <8 x double> [ %3801, %3809 ], [ %3852, %3858 ]
  %3821 = icmp slt i64 %3817, %3811
  br i1 %3821, label %3822, label %3828

3822:                                             ; preds = %3815
  %3823 = load ptr, ptr %3814, align 32, !tbaa !75, !noalias !134
  %3824 = getelementptr inbounds nuw <8 x double>, ptr %3823, i64 %3817
  %3825 = load <8 x double>, ptr %3824, align 64, !tbaa !26, !noalias !134
  %3826 = load <8 x double>, ptr %3813, align 64, !tbaa !26, !noalias !134
  %3827 = fmul <8 x double> %3825, %3826
  br label %3836

3828:                                             ; preds = %3815
  %3829 = load <8 x double>, ptr %3812, align 64, !tbaa !26, !noalias !134
  %3830 = load <8 x double>, ptr %3813, align 64, !tbaa !26, !noalias !134
  %3831 = load ptr, ptr %3814, align 32, !tbaa !75, !noalias !134
  %3832 = getelementptr inbounds nuw <8 x double>, ptr %3831, i64 %3817
  %3833 = load <8 x double>, ptr %3832, align 64, !tbaa !26, !noalias !134
  %3834 = fsub <8 x double> %3829, %3830
  %3835 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3833, <8 x double> %3834, <8 x double> %3830)
  br label %3836

3836:                                             ; preds = %3828, %3822
  %3837 = phi <8 x double> [ %3827, %3822 ], [ %3835, %3828 ]
  %3838 = getelementptr inbounds nuw <8 x double>, ptr %3803, i64 %3817
  %3839 = load <8 x double>, ptr %3838, align 64, !tbaa !26, !noalias !134
  %3840 = icmp eq <8 x i64> %3819, zeroinitializer
  %3841 = select <8 x i1> %3840, <8 x double> %3818, <8 x double> %3839
  %3842 = fsub <8 x double> %3816, %3837
  %3843 = fmul <8 x double> %3842, %3841
  %3844 = fcmp olt <8 x double> %3843, %3820
  %3845 = select <8 x i1> %3844, <8 x i64> %3819, <8 x i64> zeroinitializer
  %3846 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3845)
  %3847 = icmp eq i64 %3846, 0
  br i1 %3847, label %3861, label %3848

3848:                                             ; preds = %3836
  %3849 = fneg <8 x double> %3841
  %3850 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3849, <8 x double> %3842, <8 x double> %3820)
  %3851 = icmp eq <8 x i64> %3845, zeroinitializer
  %3852 = select <8 x i1> %3851, <8 x double> %3820, <8 x double> %3850
  %3853 = select <8 x i1> %3851, <8 x double> %3816, <8 x double> %3837
  %3854 = icmp eq i64 %3817, 1
  br i1 %3854, label %3855, label %3858

3855:                                             ; preds = %3848
  %3856 = load <8 x double>, ptr %3803, align 64, !tbaa !26, !noalias !134
  %3857 = select <8 x i1> %3851, <8 x double> %3841, <8 x double> %3856
  br label %3861

3858:                                             ; preds = %3848
  %3859 = add nsw i64 %3817, -1
  %3860 = icmp sgt i64 %3817, 1
  br i1 %3860, label %3815, label %3861, !llvm.loop !76

3861:                                             ; preds = %3858, %3836, %3855, %3797
  %3862 = phi <8 x double> [ %3801, %3797 ], [ %3852, %3855 ], [ %3820, %3836 ], [ %3852, %3858 ]
  %3863 = phi <8 x double> [ %3781, %3797 ], [ %3853, %3855 ], [ %3816, %3836 ], [ %3853, %3858 ]
  %3864 = phi <8 x double> [ %3807, %3797 ], [ %3857, %3855 ], [ %3841, %3836 ], [ %3841, %3858 ]
  %3865 = fdiv <8 x double> %3862, %3864
  %3866 = fsub <8 x double> %3863, %3865
  %3867 = icmp eq <8 x i64> %3794, zeroinitializer
  %3868 = select <8 x i1> %3867, <8 x double> %3781, <8 x double> %3866
  br label %3869

3869:                                             ; preds = %3861, %3788
  %3870 = phi <8 x double> [ %3868, %3861 ], [ %3781, %3788 ]
  %3871 = getelementptr inbounds nuw i8, ptr %3736, i64 2624
  %3872 = load <8 x double>, ptr %3871, align 64, !tbaa !26, !noalias !134
  %3873 = getelementptr inbounds nuw i8, ptr %3736, i64 2688
  %3874 = load <8 x double>, ptr %3873, align 64, !tbaa !26, !noalias !134
  %3875 = getelementptr inbounds nuw i8, ptr %3736, i64 2752
  %3876 = load <8 x double>, ptr %3875, align 64, !tbaa !26, !noalias !134
  %3877 = getelementptr inbounds nuw i8, ptr %3736, i64 2560
  %3878 = load <8 x double>, ptr %3877, align 64, !tbaa !26, !noalias !134
  %3879 = load <8 x double>, ptr %3736, align 64, !tbaa !26, !noalias !134
  %3880 = fmul <8 x double> %3879, splat (double 5.000000e-04)
  br label %3881

3881:                                             ; preds = %3869, %3881
  %3882 = phi <8 x i64> [ splat (i64 -1), %3869 ], [ %3904, %3881 ]
  %3883 = phi i32 [ 0, %3869 ], [ %3905, %3881 ]
  %3884 = phi <8 x double> [ %3783, %3869 ], [ %3901, %3881 ]
  %3885 = fmul <8 x double> %3884, splat (double 3.000000e+00)
  %3886 = fmul <8 x double> %3885, %3876
  %3887 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3874, <8 x double> splat (double 2.000000e+00), <8 x double> %3886)
  %3888 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3884, <8 x double> %3887, <8 x double> %3872)
  %3889 = fdiv <8 x double> splat (double 1.000000e+00), %3888
  %3890 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3884, <8 x double> %3876, <8 x double> %3874)
  %3891 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3884, <8 x double> %3890, <8 x double> %3872)
  %3892 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3884, <8 x double> %3891, <8 x double> %3878)
  %3893 = fsub <8 x double> %3892, %3870
  %3894 = fmul <8 x double> %3893, %3889
  %3895 = fmul <8 x double> %3894, %3894
  %3896 = fmul <8 x double> %3889, %3895
  %3897 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3885, <8 x double> %3876, <8 x double> %3874)
  %3898 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3896, <8 x double> %3897, <8 x double> %3894)
  %3899 = fsub <8 x double> %3884, %3898
  %3900 = icmp eq <8 x i64> %3882, zeroinitializer
  %3901 = select <8 x i1> %3900, <8 x double> %3884, <8 x double> %3899
  %3902 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3898)
  %3903 = fcmp oge <8 x double> %3902, %3880
  %3904 = select <8 x i1> %3903, <8 x i64> %3882, <8 x i64> zeroinitializer
  %3905 = add nuw nsw i32 %3883, 1
  %3906 = icmp samesign ult i32 %3883, 3
  %3907 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3904)
  %3908 = icmp ne i64 %3907, 0
  %3909 = select i1 %3906, i1 %3908, i1 false
  br i1 %3909, label %3881, label %3910, !llvm.loop !77

3910:                                             ; preds = %3881
  %3911 = fmul <8 x double> %3879, splat (double 2.800000e-01)
  %3912 = fcmp ogt <8 x double> %3901, %3911
  %3913 = select <8 x i1> %3912, <8 x double> %3901, <8 x double> %3911
  %3914 = fcmp olt <8 x double> %3913, %3879
  %3915 = select <8 x i1> %3914, <8 x double> %3913, <8 x double> %3879
  %3916 = icmp eq <8 x i64> %3785, zeroinitializer
  %3917 = select <8 x i1> %3916, <8 x double> %3783, <8 x double> %3915
  %3918 = fcmp olt <8 x double> %3779, %3774
  %3919 = select <8 x i1> %3916, <8 x i1> splat (i1 true), <8 x i1> %3918
  %3920 = select <8 x i1> %3919, <8 x double> %3779, <8 x double> %3774
  br label %3921

3921:                                             ; preds = %3910, %3732
  %3922 = phi <8 x double> [ %3920, %3910 ], [ %3779, %3732 ]
  %3923 = phi <8 x double> [ %3917, %3910 ], [ %3783, %3732 ]
  %3924 = phi <8 x double> [ %3870, %3910 ], [ %3781, %3732 ]
  %3925 = fsub <8 x double> %3774, %3922
  %3926 = fsub <8 x double> %3923, %3783
  %3927 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3926)
  %3928 = getelementptr inbounds nuw i8, ptr %3736, i64 3072
  %3929 = load <8 x double>, ptr %3928, align 64, !tbaa !26
  %3930 = fsub <8 x double> %3925, %3929
  %3931 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3930)
  %3932 = getelementptr inbounds nuw i8, ptr %3736, i64 7808
  %3933 = load <8 x double>, ptr %3932, align 64, !tbaa !26
  %3934 = fmul <8 x double> %3933, %3931
  %3935 = icmp eq <8 x i64> %3785, zeroinitializer
  %3936 = select <8 x i1> %3935, <8 x double> %3934, <8 x double> %3927
  br i1 %3787, label %3959, label %3937

3937:                                             ; preds = %3921
  %3938 = getelementptr inbounds nuw i8, ptr %3736, i64 7104
  %3939 = load <8 x double>, ptr %3938, align 64, !tbaa !26
  %3940 = fmul <8 x double> %3939, splat (double 2.000000e+00)
  %3941 = getelementptr inbounds nuw i8, ptr %3736, i64 384
  %3942 = load <8 x double>, ptr %3941, align 64, !tbaa !26
  %3943 = getelementptr inbounds nuw i8, ptr %3736, i64 448
  %3944 = load <8 x double>, ptr %3943, align 64, !tbaa !26
  %3945 = getelementptr inbounds nuw i8, ptr %3736, i64 512
  %3946 = load <8 x double>, ptr %3945, align 64, !tbaa !26
  %3947 = fmul <8 x double> %3743, %3946
  %3948 = fmul <8 x double> %3947, splat (double 0x3FD5555555555555)
  %3949 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3944, <8 x double> splat (double 5.000000e-01), <8 x double> %3948)
  %3950 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3743, <8 x double> %3949, <8 x double> %3942)
  %3951 = fmul <8 x double> %3743, %3950
  %3952 = getelementptr inbounds nuw i8, ptr %3736, i64 768
  %3953 = load <8 x double>, ptr %3952, align 64, !tbaa !26
  %3954 = fneg <8 x double> %3953
  %3955 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3954, <8 x double> %3743, <8 x double> %3951)
  %3956 = fmul <8 x double> %3940, %3955
  %3957 = fsub <8 x double> %3756, %3956
  %3958 = select <8 x i1> %3935, <8 x double> %3756, <8 x double> %3957
  br label %3959

3959:                                             ; preds = %3921, %3937
  %3960 = phi <8 x double> [ %3958, %3937 ], [ %3756, %3921 ]
  %3961 = getelementptr inbounds nuw i8, ptr %3736, i64 3264
  store <8 x double> %3771, ptr %3961, align 64, !tbaa !26
  store <8 x double> %3925, ptr %3928, align 64, !tbaa !26
  %3962 = getelementptr inbounds nuw i8, ptr %3736, i64 3136
  store <8 x double> %3922, ptr %3962, align 64, !tbaa !26
  %3963 = getelementptr inbounds nuw i8, ptr %3736, i64 3008
  %3964 = load <8 x double>, ptr %3963, align 64, !tbaa !26
  %3965 = select <8 x i1> %3935, <8 x double> %3964, <8 x double> %3924
  store <8 x double> %3965, ptr %3963, align 64, !tbaa !26
  %3966 = select <8 x i1> %3935, <8 x double> %3783, <8 x double> %3923
  store <8 x double> %3966, ptr %3782, align 64, !tbaa !26
  %3967 = getelementptr inbounds nuw i8, ptr %3736, i64 3520
  store <8 x double> %3740, ptr %3967, align 64, !tbaa !26
  %3968 = getelementptr inbounds nuw i8, ptr %3736, i64 3584
  store <8 x double> %3743, ptr %3968, align 64, !tbaa !26
  %3969 = getelementptr inbounds nuw i8, ptr %3736, i64 3200
  %3970 = load <8 x double>, ptr %3969, align 64, !tbaa !26
  %3971 = getelementptr inbounds nuw i8, ptr %3736, i64 5888
  %3972 = load <8 x double>, ptr %3971, align 64, !tbaa !26
  %3973 = fsub <8 x double> %3972, %3743
  %3974 = getelementptr inbounds nuw i8, ptr %3736, i64 8256
  %3975 = load <8 x double>, ptr %3974, align 64, !tbaa !26
  %3976 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3970, <8 x double> %3975, <8 x double> splat (double 1.000000e+00))
  %3977 = fdiv <8 x double> %3973, %3976
  %3978 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3743, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3979 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3743, <8 x double> %3978, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3980 = fneg <8 x double> %3738
  %3981 = fmul <8 x double> %3979, %3980
  %3982 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3970, <8 x double> %3977, <8 x double> %3981)
  %3983 = getelementptr inbounds nuw i8, ptr %3736, i64 3456
  store <8 x double> %3982, ptr %3983, align 64, !tbaa !26
  %3984 = getelementptr inbounds nuw i8, ptr %3736, i64 6784
  %3985 = load <8 x double>, ptr %3984, align 64, !tbaa !26
  %3986 = fsub <8 x double> %3972, %3985
  %3987 = fsub <8 x double> %3986, %3977
  %3988 = getelementptr inbounds nuw i8, ptr %3736, i64 3648
  store <8 x double> %3987, ptr %3988, align 64, !tbaa !26
  %3989 = getelementptr inbounds nuw i8, ptr %3736, i64 7360
  %3990 = load <8 x double>, ptr %3989, align 64, !tbaa !26
  %3991 = getelementptr inbounds nuw i8, ptr %3736, i64 7424
  %3992 = load <8 x double>, ptr %3991, align 64, !tbaa !26
  %3993 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3990, <8 x double> %3743, <8 x double> %3992)
  %3994 = getelementptr inbounds nuw i8, ptr %3736, i64 6720
  %3995 = load <8 x double>, ptr %3994, align 64, !tbaa !26
  %3996 = getelementptr inbounds nuw i8, ptr %3736, i64 4224
  %3997 = load <8 x double>, ptr %3996, align 64, !tbaa !26
  %3998 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3761, <8 x double> %3997, <8 x double> %3995)
  %3999 = getelementptr inbounds nuw i8, ptr %3736, i64 5120
  %4000 = load <8 x double>, ptr %3999, align 64, !tbaa !26
  %4001 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3767, <8 x double> %4000, <8 x double> %3998)
  %4002 = fmul <8 x double> %3770, %4001
  %4003 = getelementptr inbounds nuw i8, ptr %3736, i64 3328
  store <8 x double> %4002, ptr %4003, align 64, !tbaa !26
  %4004 = getelementptr inbounds nuw i8, ptr %3736, i64 4288
  %4005 = load <8 x double>, ptr %4004, align 64, !tbaa !26
  %4006 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3761, <8 x double> %4005, <8 x double> %3960)
  %4007 = getelementptr inbounds nuw i8, ptr %3736, i64 5184
  %4008 = load <8 x double>, ptr %4007, align 64, !tbaa !26
  %4009 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3767, <8 x double> %4008, <8 x double> %4006)
  %4010 = fmul <8 x double> %3770, %4009
  %4011 = getelementptr inbounds nuw i8, ptr %3736, i64 3392
  store <8 x double> %4010, ptr %4011, align 64, !tbaa !26
  %4012 = getelementptr inbounds nuw i8, ptr %3736, i64 4608
  %4013 = load <8 x double>, ptr %4012, align 64, !tbaa !26
  %4014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3761, <8 x double> %4013, <8 x double> %3993)
  %4015 = getelementptr inbounds nuw i8, ptr %3736, i64 5504
  %4016 = load <8 x double>, ptr %4015, align 64, !tbaa !26
  %4017 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3767, <8 x double> %4016, <8 x double> %4014)
  %4018 = fmul <8 x double> %3770, %4017
  %4019 = getelementptr inbounds nuw i8, ptr %3736, i64 3712
  store <8 x double> %4018, ptr %4019, align 64, !tbaa !26
  %4020 = fcmp ogt <8 x double> %3734, %3936
  %4021 = select <8 x i1> %4020, <8 x double> %3734, <8 x double> %3936
  %4022 = add nuw nsw i64 %3733, 1
  %4023 = load i64, ptr %179, align 8, !tbaa !20
  %4024 = icmp slt i64 %4022, %4023
  br i1 %4024, label %3732, label %4025, !llvm.loop !137

4025:                                             ; preds = %3959, %3535
  %4026 = phi <8 x double> [ zeroinitializer, %3535 ], [ %4021, %3959 ]
  %4027 = phi i64 [ %3538, %3535 ], [ %4023, %3959 ]
  %4028 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %4029 = fadd <8 x double> %4028, splat (double 1.000000e+00)
  store <8 x double> %4029, ptr %196, align 64, !tbaa !26
  %4030 = icmp sgt i64 %4027, 0
  br i1 %4030, label %4031, label %4037

4031:                                             ; preds = %4025
  %4032 = load ptr, ptr %152, align 8, !tbaa !28
  %4033 = load i64, ptr %141, align 16, !tbaa !21
  %4034 = add nsw i64 %4033, -1
  br label %4059

4035:                                             ; preds = %4085
  %4036 = fcmp oeq <8 x double> %4100, zeroinitializer
  br label %4037

4037:                                             ; preds = %4035, %4025
  %4038 = phi <8 x i1> [ splat (i1 true), %4025 ], [ %4036, %4035 ]
  %4039 = load i64, ptr %231, align 32, !tbaa !24
  %4040 = sitofp i64 %4039 to double
  %4041 = insertelement <8 x double> poison, double %4040, i64 0
  %4042 = shufflevector <8 x double> %4041, <8 x double> poison, <8 x i32> zeroinitializer
  %4043 = fcmp oge <8 x double> %4029, %4042
  %4044 = and <8 x i1> %4038, %4043
  %4045 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %4046 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %4047 = fcmp olt <8 x double> %4026, %4046
  %4048 = or <8 x i1> %4047, %4044
  %4049 = fcmp oge <8 x double> %4029, splat (double 2.000000e+01)
  %4050 = or <8 x i1> %4049, %4048
  %4051 = select <8 x i1> %4050, <8 x i64> %4045, <8 x i64> zeroinitializer
  store <8 x i64> %4051, ptr %156, align 64, !tbaa !26
  %4052 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4051)
  %4053 = icmp eq i64 %4052, 0
  br i1 %4053, label %553, label %4054, !llvm.loop !57

4054:                                             ; preds = %4037
  %4055 = load i64, ptr %179, align 8, !tbaa !20
  %4056 = icmp sgt i64 %4055, 0
  br i1 %4056, label %4057, label %4103

4057:                                             ; preds = %4054
  %4058 = icmp eq <8 x i64> %4051, zeroinitializer
  br label %4409

4059:                                             ; preds = %4031, %4085
  %4060 = phi i64 [ 0, %4031 ], [ %4101, %4085 ]
  %4061 = phi <8 x double> [ zeroinitializer, %4031 ], [ %4100, %4085 ]
  %4062 = getelementptr inbounds nuw %struct.Piece, ptr %4032, i64 %4060
  %4063 = getelementptr inbounds nuw i8, ptr %4062, i64 8512
  %4064 = load i64, ptr %4063, align 64, !tbaa !31
  %4065 = icmp sgt i64 %4033, %4064
  br i1 %4065, label %4074, label %4066

4066:                                             ; preds = %4059
  %4067 = getelementptr inbounds nuw i8, ptr %4062, i64 8672
  %4068 = load ptr, ptr %4067, align 32, !tbaa !75
  %4069 = getelementptr inbounds <8 x double>, ptr %4068, i64 %4034
  %4070 = load <8 x double>, ptr %4069, align 64, !tbaa !26
  %4071 = getelementptr inbounds nuw i8, ptr %4062, i64 1536
  %4072 = load <8 x double>, ptr %4071, align 64, !tbaa !26
  %4073 = fmul <8 x double> %4070, %4072
  br label %4085

4074:                                             ; preds = %4059
  %4075 = getelementptr inbounds nuw i8, ptr %4062, i64 3776
  %4076 = load <8 x double>, ptr %4075, align 64, !tbaa !26
  %4077 = getelementptr inbounds nuw i8, ptr %4062, i64 1536
  %4078 = load <8 x double>, ptr %4077, align 64, !tbaa !26
  %4079 = getelementptr inbounds nuw i8, ptr %4062, i64 8672
  %4080 = load ptr, ptr %4079, align 32, !tbaa !75
  %4081 = getelementptr inbounds <8 x double>, ptr %4080, i64 %4034
  %4082 = load <8 x double>, ptr %4081, align 64, !tbaa !26
  %4083 = fsub <8 x double> %4076, %4078
  %4084 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4082, <8 x double> %4083, <8 x double> %4078)
  br label %4085

4085:                                             ; preds = %4066, %4074
  %4086 = phi <8 x double> [ %4073, %4066 ], [ %4084, %4074 ]
  %4087 = getelementptr inbounds nuw i8, ptr %4062, i64 8320
  %4088 = load <8 x i64>, ptr %4087, align 64, !tbaa !26
  %4089 = getelementptr inbounds nuw i8, ptr %4062, i64 7616
  %4090 = load <8 x double>, ptr %4089, align 64, !tbaa !26
  %4091 = fcmp une <8 x double> %4090, zeroinitializer
  %4092 = getelementptr inbounds nuw i8, ptr %4062, i64 3008
  %4093 = load <8 x double>, ptr %4092, align 64, !tbaa !26
  %4094 = fcmp uge <8 x double> %4093, %4086
  %4095 = select <8 x i1> %4094, <8 x i1> splat (i1 true), <8 x i1> %4091
  %4096 = icmp eq <8 x i64> %4088, zeroinitializer
  %4097 = select <8 x i1> %4095, <8 x i1> splat (i1 true), <8 x i1> %4096
  %4098 = select <8 x i1> %4097, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %4099 = fcmp ogt <8 x double> %4061, %4098
  %4100 = select <8 x i1> %4099, <8 x double> %4061, <8 x double> %4098
  %4101 = add nuw nsw i64 %4060, 1
  %4102 = icmp eq i64 %4101, %4027
  br i1 %4102, label %4035, label %4059, !llvm.loop !138

4103:                                             ; preds = %4457, %4054
  %4104 = phi i64 [ %4055, %4054 ], [ %4463, %4457 ]
  %4105 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %4106 = fadd <8 x double> %4105, splat (double 1.000000e+00)
  %4107 = icmp eq <8 x i64> %4051, zeroinitializer
  %4108 = select <8 x i1> %4107, <8 x double> %4105, <8 x double> %4106
  store <8 x double> %4108, ptr %184, align 64, !tbaa !26
  %4109 = fcmp ogt <8 x double> %4108, splat (double 4.000000e+01)
  %4110 = select <8 x i1> %4109, <8 x i64> %4051, <8 x i64> zeroinitializer
  %4111 = xor <8 x i64> %4110, %4051
  %4112 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %4113 = fadd <8 x double> %4112, splat (double 1.000000e+00)
  %4114 = icmp eq <8 x i64> %4110, zeroinitializer
  %4115 = select <8 x i1> %4114, <8 x double> %4112, <8 x double> %4113
  store <8 x double> %4115, ptr %149, align 64, !tbaa !26
  %4116 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %4117 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4118 = fsub <8 x double> %4116, %4117
  %4119 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %4118)
  %4120 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4121 = fmul <8 x double> %4120, splat (double 1.500000e+00)
  %4122 = fcmp ogt <8 x double> %4119, %4121
  %4123 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4124 = fcmp ogt <8 x double> %4123, splat (double 2.000000e-03)
  %4125 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4126 = fcmp oeq <8 x double> %4125, zeroinitializer
  %4127 = and <8 x i1> %4122, %4126
  %4128 = and <8 x i1> %4124, %4127
  %4129 = fdiv <8 x double> %4120, %4119
  %4130 = select <8 x i1> %4128, <8 x i64> %4111, <8 x i64> zeroinitializer
  %4131 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4132 = fcmp ogt <8 x double> %4131, %4123
  %4133 = select <8 x i1> %4132, <8 x double> %4131, <8 x double> %4123
  %4134 = select <8 x i1> %4128, <8 x double> zeroinitializer, <8 x double> %4133
  %4135 = icmp eq <8 x i64> %4130, zeroinitializer
  %4136 = select <8 x i1> %4135, <8 x double> %4131, <8 x double> %4134
  store <8 x double> %4136, ptr %182, align 64, !tbaa !26
  %4137 = fcmp ogt <8 x double> %4129, splat (double 5.000000e-02)
  %4138 = select <8 x i1> %4137, <8 x double> %4129, <8 x double> splat (double 5.000000e-02)
  %4139 = fcmp olt <8 x double> %4138, splat (double 0x3FEE666666666666)
  %4140 = select <8 x i1> %4139, <8 x double> %4138, <8 x double> splat (double 0x3FEE666666666666)
  %4141 = fmul <8 x double> %4123, %4140
  %4142 = fcmp ogt <8 x double> %4141, splat (double 0x3EB0C6F7A0B5ED8D)
  %4143 = select <8 x i1> %4142, <8 x double> %4141, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4144 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %4145 = select <8 x i1> %4135, <8 x double> %4144, <8 x double> %4143
  store <8 x double> %4145, ptr %162, align 64, !tbaa !26
  %4146 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %4147 = fadd <8 x double> %4146, splat (double 1.000000e+00)
  %4148 = select <8 x i1> %4135, <8 x double> %4146, <8 x double> %4147
  store <8 x double> %4148, ptr %146, align 64, !tbaa !26
  %4149 = xor <8 x i64> %4130, %4111
  %4150 = icmp sgt i64 %4104, 0
  br i1 %4150, label %4151, label %4250

4151:                                             ; preds = %4103
  %4152 = load ptr, ptr %152, align 8, !tbaa !28
  %4153 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4154 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4155 = fcmp une <8 x double> %4153, %4154
  %4156 = fcmp ule <8 x double> %4153, zeroinitializer
  %4157 = or <8 x i1> %4156, %4155
  %4158 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %4159 = fcmp ogt <8 x double> %4123, splat (double 0x3E7AD7F29ABCAF48)
  %4160 = fcmp ogt <8 x double> %4123, splat (double 1.000000e-05)
  %4161 = fcmp ogt <8 x double> %4123, splat (double 1.000000e-04)
  br label %4162

4162:                                             ; preds = %4151, %4162
  %4163 = phi i64 [ 0, %4151 ], [ %4246, %4162 ]
  %4164 = phi <8 x double> [ splat (double 1.000000e+00), %4151 ], [ %4245, %4162 ]
  %4165 = phi <8 x i64> [ zeroinitializer, %4151 ], [ %4193, %4162 ]
  %4166 = phi <8 x i64> [ zeroinitializer, %4151 ], [ %4242, %4162 ]
  %4167 = getelementptr inbounds nuw %struct.Piece, ptr %4152, i64 %4163
  %4168 = getelementptr inbounds nuw i8, ptr %4167, i64 3072
  %4169 = load <8 x double>, ptr %4168, align 64, !tbaa !26
  %4170 = getelementptr inbounds nuw i8, ptr %4167, i64 3968
  %4171 = load <8 x double>, ptr %4170, align 64, !tbaa !26
  %4172 = getelementptr inbounds nuw i8, ptr %4167, i64 8320
  %4173 = load <8 x i64>, ptr %4172, align 64, !tbaa !26
  %4174 = xor <8 x i64> %4173, splat (i64 -1)
  %4175 = getelementptr inbounds nuw i8, ptr %4167, i64 896
  %4176 = load <8 x double>, ptr %4175, align 64, !tbaa !26
  %4177 = fmul <8 x double> %4158, %4176
  %4178 = fcmp ogt <8 x double> %4177, splat (double 0x3E7AD7F29ABCAF48)
  %4179 = fneg <8 x double> %4177
  %4180 = select <8 x i1> %4178, <8 x double> %4179, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4181 = fcmp olt <8 x double> %4169, %4180
  %4182 = select <8 x i1> %4181, <8 x i1> %4157, <8 x i1> zeroinitializer
  %4183 = select <8 x i1> %4182, <8 x i64> %4174, <8 x i64> zeroinitializer
  %4184 = fcmp ole <8 x double> %4171, zeroinitializer
  %4185 = select <8 x i1> %4184, <8 x i64> %4183, <8 x i64> zeroinitializer
  %4186 = getelementptr inbounds nuw i8, ptr %4167, i64 832
  %4187 = load <8 x double>, ptr %4186, align 64, !tbaa !26
  %4188 = fmul <8 x double> %4187, splat (double -3.000000e-07)
  %4189 = fcmp olt <8 x double> %4169, %4188
  %4190 = select <8 x i1> %4159, <8 x i1> %4189, <8 x i1> zeroinitializer
  %4191 = select <8 x i1> %4190, <8 x i64> %4185, <8 x i64> zeroinitializer
  %4192 = or <8 x i64> %4191, %4166
  %4193 = or <8 x i64> %4191, %4165
  %4194 = fcmp olt <8 x double> %4164, splat (double 3.000000e-01)
  %4195 = icmp eq <8 x i64> %4191, zeroinitializer
  %4196 = select <8 x i1> %4195, <8 x i1> splat (i1 true), <8 x i1> %4194
  %4197 = select <8 x i1> %4196, <8 x double> %4164, <8 x double> splat (double 3.000000e-01)
  %4198 = xor <8 x i64> %4185, splat (i64 -1)
  %4199 = and <8 x i64> %4183, %4198
  %4200 = select <8 x i1> %4160, <8 x i64> %4199, <8 x i64> zeroinitializer
  %4201 = fsub <8 x double> %4171, %4169
  %4202 = fdiv <8 x double> %4171, %4201
  %4203 = or <8 x i64> %4192, %4200
  %4204 = fcmp olt <8 x double> %4197, %4202
  %4205 = icmp eq <8 x i64> %4200, zeroinitializer
  %4206 = select <8 x i1> %4205, <8 x i1> splat (i1 true), <8 x i1> %4204
  %4207 = select <8 x i1> %4206, <8 x double> %4197, <8 x double> %4202
  %4208 = getelementptr inbounds nuw i8, ptr %4167, i64 3904
  %4209 = load <8 x double>, ptr %4208, align 64, !tbaa !26
  %4210 = getelementptr inbounds nuw i8, ptr %4167, i64 3008
  %4211 = load <8 x double>, ptr %4210, align 64, !tbaa !26
  %4212 = getelementptr inbounds nuw i8, ptr %4167, i64 7616
  %4213 = load <8 x double>, ptr %4212, align 64, !tbaa !26
  %4214 = fcmp oeq <8 x double> %4213, zeroinitializer
  %4215 = getelementptr inbounds nuw i8, ptr %4167, i64 1472
  %4216 = load <8 x double>, ptr %4215, align 64, !tbaa !26
  %4217 = fmul <8 x double> %4216, splat (double 0x3FEFF7CED916872B)
  %4218 = fcmp olt <8 x double> %4211, %4217
  %4219 = and <8 x i1> %4214, %4218
  %4220 = and <8 x i1> %4161, %4219
  %4221 = fsub <8 x double> %4209, %4216
  %4222 = fsub <8 x double> %4209, %4211
  %4223 = fdiv <8 x double> %4221, %4222
  %4224 = fcmp uge <8 x double> %4207, %4223
  %4225 = select <8 x i1> %4220, <8 x i1> %4224, <8 x i1> zeroinitializer
  %4226 = select <8 x i1> %4225, <8 x double> %4223, <8 x double> %4207
  %4227 = fcmp oeq <8 x double> %4213, splat (double 1.000000e+00)
  %4228 = getelementptr inbounds nuw i8, ptr %4167, i64 3264
  %4229 = load <8 x double>, ptr %4228, align 64, !tbaa !26
  %4230 = getelementptr inbounds nuw i8, ptr %4167, i64 1600
  %4231 = load <8 x double>, ptr %4230, align 64, !tbaa !26
  %4232 = fmul <8 x double> %4231, splat (double 1.000100e+00)
  %4233 = fcmp ogt <8 x double> %4229, %4232
  %4234 = and <8 x i1> %4227, %4233
  %4235 = and <8 x i1> %4161, %4234
  %4236 = getelementptr inbounds nuw i8, ptr %4167, i64 4160
  %4237 = load <8 x double>, ptr %4236, align 64, !tbaa !26
  %4238 = fsub <8 x double> %4231, %4237
  %4239 = fsub <8 x double> %4229, %4237
  %4240 = fdiv <8 x double> %4238, %4239
  %4241 = select <8 x i1> %4234, <8 x i1> %4161, <8 x i1> %4220
  %4242 = select <8 x i1> %4241, <8 x i64> splat (i64 -1), <8 x i64> %4203
  %4243 = fcmp uge <8 x double> %4226, %4240
  %4244 = select <8 x i1> %4235, <8 x i1> %4243, <8 x i1> zeroinitializer
  %4245 = select <8 x i1> %4244, <8 x double> %4240, <8 x double> %4226
  %4246 = add nuw nsw i64 %4163, 1
  %4247 = icmp eq i64 %4246, %4104
  br i1 %4247, label %4248, label %4162, !llvm.loop !139

4248:                                             ; preds = %4162
  %4249 = icmp eq <8 x i64> %4193, zeroinitializer
  br label %4250

4250:                                             ; preds = %4248, %4103
  %4251 = phi <8 x i64> [ zeroinitializer, %4103 ], [ %4242, %4248 ]
  %4252 = phi <8 x i1> [ splat (i1 true), %4103 ], [ %4249, %4248 ]
  %4253 = phi <8 x double> [ splat (double 1.000000e+00), %4103 ], [ %4245, %4248 ]
  %4254 = and <8 x i64> %4251, %4149
  %4255 = fcmp ogt <8 x double> %4136, %4123
  %4256 = select <8 x i1> %4255, <8 x double> %4136, <8 x double> %4123
  %4257 = select <8 x i1> %4252, <8 x double> %4256, <8 x double> zeroinitializer
  %4258 = icmp eq <8 x i64> %4254, zeroinitializer
  %4259 = select <8 x i1> %4258, <8 x double> %4136, <8 x double> %4257
  %4260 = fcmp ogt <8 x double> %4253, splat (double 5.000000e-02)
  %4261 = select <8 x i1> %4260, <8 x double> %4253, <8 x double> splat (double 5.000000e-02)
  %4262 = fcmp olt <8 x double> %4261, splat (double 0x3FEE666666666666)
  %4263 = select <8 x i1> %4262, <8 x double> %4261, <8 x double> splat (double 0x3FEE666666666666)
  %4264 = fmul <8 x double> %4123, %4263
  %4265 = fcmp ogt <8 x double> %4264, splat (double 0x3EB0C6F7A0B5ED8D)
  %4266 = select <8 x i1> %4265, <8 x double> %4264, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4267 = select <8 x i1> %4258, <8 x double> %4145, <8 x double> %4266
  %4268 = fadd <8 x double> %4148, splat (double 1.000000e+00)
  %4269 = select <8 x i1> %4258, <8 x double> %4148, <8 x double> %4268
  %4270 = xor <8 x i64> %4254, %4149
  %4271 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %4272 = fmul <8 x double> %4271, splat (double 5.000000e-01)
  %4273 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %4274 = load <8 x i64>, ptr %166, align 64, !tbaa !26
  %4275 = fneg <8 x double> %4272
  %4276 = icmp eq <8 x i64> %4274, zeroinitializer
  %4277 = select <8 x i1> %4276, <8 x double> %4275, <8 x double> %4272
  %4278 = fadd <8 x double> %4273, %4277
  %4279 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %4280 = fsub <8 x double> %4279, %4278
  %4281 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %4282 = fsub <8 x double> %4281, %4278
  %4283 = fneg <8 x double> %4280
  %4284 = select <8 x i1> %4276, <8 x double> %4283, <8 x double> %4280
  %4285 = fneg <8 x double> %4282
  %4286 = select <8 x i1> %4276, <8 x double> %4285, <8 x double> %4282
  %4287 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %4288 = fcmp oeq <8 x double> %4287, zeroinitializer
  %4289 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %4290 = fcmp oeq <8 x double> %4289, zeroinitializer
  %4291 = and <8 x i1> %4288, %4290
  %4292 = fcmp olt <8 x double> %4284, splat (double -4.000000e-03)
  %4293 = and <8 x i1> %4291, %4292
  %4294 = fcmp ogt <8 x double> %4286, splat (double 4.000000e-03)
  %4295 = and <8 x i1> %4294, %4293
  %4296 = and <8 x i1> %4124, %4295
  %4297 = fsub <8 x double> %4284, %4286
  %4298 = fdiv <8 x double> %4284, %4297
  %4299 = select <8 x i1> %4296, <8 x i64> %4270, <8 x i64> zeroinitializer
  %4300 = fcmp ogt <8 x double> %4259, %4123
  %4301 = icmp eq <8 x i64> %4299, zeroinitializer
  %4302 = select <8 x i1> %4301, <8 x i1> splat (i1 true), <8 x i1> %4300
  %4303 = select <8 x i1> %4302, <8 x double> %4259, <8 x double> %4123
  store <8 x double> %4303, ptr %182, align 64, !tbaa !26
  %4304 = fcmp ogt <8 x double> %4298, splat (double 5.000000e-02)
  %4305 = select <8 x i1> %4304, <8 x double> %4298, <8 x double> splat (double 5.000000e-02)
  %4306 = fcmp olt <8 x double> %4305, splat (double 0x3FEE666666666666)
  %4307 = select <8 x i1> %4306, <8 x double> %4305, <8 x double> splat (double 0x3FEE666666666666)
  %4308 = fmul <8 x double> %4123, %4307
  %4309 = fcmp ogt <8 x double> %4308, splat (double 0x3EB0C6F7A0B5ED8D)
  %4310 = select <8 x i1> %4309, <8 x double> %4308, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4311 = select <8 x i1> %4301, <8 x double> %4267, <8 x double> %4310
  store <8 x double> %4311, ptr %162, align 64, !tbaa !26
  %4312 = fadd <8 x double> %4269, splat (double 1.000000e+00)
  %4313 = select <8 x i1> %4301, <8 x double> %4269, <8 x double> %4312
  store <8 x double> %4313, ptr %146, align 64, !tbaa !26
  %4314 = xor <8 x i64> %4299, %4270
  %4315 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4316 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %4317 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %4318 = fsub <8 x double> %4316, %4317
  %4319 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %4320 = fcmp une <8 x double> %4319, splat (double 1.000000e+00)
  %4321 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %4322 = fsub <8 x double> %4279, %4321
  %4323 = select <8 x i1> %4320, <8 x double> splat (double -1.000000e+00), <8 x double> %4322
  %4324 = fcmp une <8 x double> %4319, splat (double 2.000000e+00)
  %4325 = fsub <8 x double> %4315, %4321
  %4326 = select <8 x i1> %4324, <8 x double> %4323, <8 x double> %4325
  %4327 = fcmp une <8 x double> %4319, splat (double 3.000000e+00)
  %4328 = fsub <8 x double> %4318, %4321
  %4329 = select <8 x i1> %4327, <8 x double> %4326, <8 x double> %4328
  %4330 = fcmp une <8 x double> %4319, splat (double 4.000000e+00)
  %4331 = fsub <8 x double> %4321, %4318
  %4332 = select <8 x i1> %4330, <8 x double> %4329, <8 x double> %4331
  br i1 %4150, label %4333, label %4365

4333:                                             ; preds = %4250
  %4334 = load ptr, ptr %152, align 8, !tbaa !28
  %4335 = and i64 %4104, 1
  %4336 = icmp eq i64 %4104, 1
  br i1 %4336, label %4355, label %4337

4337:                                             ; preds = %4333
  %4338 = and i64 %4104, 9223372036854775806
  br label %4339

4339:                                             ; preds = %4339, %4337
  %4340 = phi i64 [ 0, %4337 ], [ %4352, %4339 ]
  %4341 = phi <8 x double> [ splat (double 1.000000e+09), %4337 ], [ %4351, %4339 ]
  %4342 = phi i64 [ 0, %4337 ], [ %4353, %4339 ]
  %4343 = getelementptr inbounds nuw %struct.Piece, ptr %4334, i64 %4340, i32 34
  %4344 = load <8 x double>, ptr %4343, align 64, !tbaa !26
  %4345 = fcmp olt <8 x double> %4341, %4344
  %4346 = select <8 x i1> %4345, <8 x double> %4341, <8 x double> %4344
  %4347 = or disjoint i64 %4340, 1
  %4348 = getelementptr inbounds nuw %struct.Piece, ptr %4334, i64 %4347, i32 34
  %4349 = load <8 x double>, ptr %4348, align 64, !tbaa !26
  %4350 = fcmp olt <8 x double> %4346, %4349
  %4351 = select <8 x i1> %4350, <8 x double> %4346, <8 x double> %4349
  %4352 = add nuw nsw i64 %4340, 2
  %4353 = add i64 %4342, 2
  %4354 = icmp eq i64 %4353, %4338
  br i1 %4354, label %4355, label %4339, !llvm.loop !140

4355:                                             ; preds = %4339, %4333
  %4356 = phi <8 x double> [ poison, %4333 ], [ %4351, %4339 ]
  %4357 = phi i64 [ 0, %4333 ], [ %4352, %4339 ]
  %4358 = phi <8 x double> [ splat (double 1.000000e+09), %4333 ], [ %4351, %4339 ]
  %4359 = icmp eq i64 %4335, 0
  br i1 %4359, label %4365, label %4360

4360:                                             ; preds = %4355
  %4361 = getelementptr inbounds nuw %struct.Piece, ptr %4334, i64 %4357, i32 34
  %4362 = load <8 x double>, ptr %4361, align 64, !tbaa !26
  %4363 = fcmp olt <8 x double> %4358, %4362
  %4364 = select <8 x i1> %4363, <8 x double> %4358, <8 x double> %4362
  br label %4365

4365:                                             ; preds = %4360, %4355, %4250
  %4366 = phi <8 x double> [ splat (double 1.000000e+09), %4250 ], [ %4356, %4355 ], [ %4364, %4360 ]
  %4367 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %4368 = fsub <8 x double> %4367, %4317
  %4369 = fsub <8 x double> %4281, %4321
  %4370 = select <8 x i1> %4320, <8 x double> splat (double -1.000000e+00), <8 x double> %4369
  %4371 = fsub <8 x double> %4366, %4321
  %4372 = select <8 x i1> %4324, <8 x double> %4370, <8 x double> %4371
  %4373 = fsub <8 x double> %4368, %4321
  %4374 = select <8 x i1> %4327, <8 x double> %4372, <8 x double> %4373
  %4375 = fsub <8 x double> %4321, %4368
  %4376 = select <8 x i1> %4330, <8 x double> %4374, <8 x double> %4375
  %4377 = fcmp une <8 x double> %4319, zeroinitializer
  %4378 = fcmp oge <8 x double> %4123, splat (double 5.000000e-02)
  %4379 = and <8 x i1> %4378, %4377
  %4380 = fcmp olt <8 x double> %4332, zeroinitializer
  %4381 = and <8 x i1> %4379, %4380
  %4382 = fsub <8 x double> %4376, %4332
  %4383 = fmul <8 x double> %4382, splat (double 2.000000e-02)
  %4384 = fcmp ogt <8 x double> %4376, %4383
  %4385 = and <8 x i1> %4381, %4384
  %4386 = fsub <8 x double> %4332, %4376
  %4387 = fdiv <8 x double> %4332, %4386
  %4388 = fcmp olt <8 x double> %4387, splat (double 0x3FEE666666666666)
  %4389 = and <8 x i1> %4388, %4385
  %4390 = select <8 x i1> %4389, <8 x i64> %4314, <8 x i64> zeroinitializer
  %4391 = fcmp ogt <8 x double> %4303, %4123
  %4392 = icmp eq <8 x i64> %4390, zeroinitializer
  %4393 = select <8 x i1> %4392, <8 x i1> splat (i1 true), <8 x i1> %4391
  %4394 = select <8 x i1> %4393, <8 x double> %4303, <8 x double> %4123
  store <8 x double> %4394, ptr %182, align 64, !tbaa !26
  %4395 = fcmp ogt <8 x double> %4387, splat (double 5.000000e-02)
  %4396 = select <8 x i1> %4395, <8 x double> %4387, <8 x double> splat (double 5.000000e-02)
  %4397 = fcmp olt <8 x double> %4396, splat (double 0x3FEE666666666666)
  %4398 = select <8 x i1> %4397, <8 x double> %4396, <8 x double> splat (double 0x3FEE666666666666)
  %4399 = fmul <8 x double> %4123, %4398
  %4400 = fcmp ogt <8 x double> %4399, splat (double 0x3EB0C6F7A0B5ED8D)
  %4401 = select <8 x i1> %4400, <8 x double> %4399, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4402 = select <8 x i1> %4392, <8 x double> %4311, <8 x double> %4401
  store <8 x double> %4402, ptr %162, align 64, !tbaa !26
  %4403 = fadd <8 x double> %4313, splat (double 1.000000e+00)
  %4404 = select <8 x i1> %4392, <8 x double> %4313, <8 x double> %4403
  store <8 x double> %4404, ptr %146, align 64, !tbaa !26
  %4405 = xor <8 x i64> %4390, %4314
  %4406 = or <8 x i64> %4405, %4110
  %4407 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4406)
  %4408 = icmp eq i64 %4407, 0
  br i1 %4408, label %553, label %4465

4409:                                             ; preds = %4057, %4457
  %4410 = phi i64 [ 0, %4057 ], [ %4462, %4457 ]
  %4411 = load ptr, ptr %152, align 8, !tbaa !28
  %4412 = getelementptr inbounds nuw %struct.Piece, ptr %4411, i64 %4410
  %4413 = getelementptr inbounds nuw i8, ptr %4412, i64 8584
  %4414 = load ptr, ptr %4413, align 8, !tbaa !60
  %4415 = load <8 x double>, ptr %4414, align 64, !tbaa !26
  %4416 = getelementptr inbounds nuw i8, ptr %4412, i64 1344
  %4417 = load <8 x double>, ptr %4416, align 64, !tbaa !26
  %4418 = getelementptr inbounds nuw i8, ptr %4414, i64 64
  %4419 = load <8 x double>, ptr %4418, align 64, !tbaa !26
  %4420 = fsub <8 x double> %4419, %4415
  %4421 = fneg <8 x double> %4417
  %4422 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4421, <8 x double> %4420, <8 x double> %4415)
  %4423 = getelementptr inbounds nuw i8, ptr %4412, i64 8512
  %4424 = load i64, ptr %4423, align 64, !tbaa !31
  %4425 = icmp eq i64 %4424, 0
  br i1 %4425, label %4457, label %4426

4426:                                             ; preds = %4409
  %4427 = getelementptr <8 x double>, ptr %4414, i64 %4424
  %4428 = getelementptr i8, ptr %4427, i64 -64
  %4429 = load <8 x double>, ptr %4428, align 64, !tbaa !26
  %4430 = load <8 x double>, ptr %4427, align 64, !tbaa !26
  %4431 = getelementptr inbounds nuw i8, ptr %4412, i64 2880
  %4432 = load <8 x double>, ptr %4431, align 64, !tbaa !26
  %4433 = getelementptr inbounds nuw i8, ptr %4412, i64 2944
  %4434 = load <8 x double>, ptr %4433, align 64, !tbaa !26
  %4435 = getelementptr inbounds nuw i8, ptr %4412, i64 64
  %4436 = load <8 x double>, ptr %4435, align 64, !tbaa !26
  %4437 = fsub <8 x double> %4434, %4436
  %4438 = fmul <8 x double> %4432, %4437
  %4439 = getelementptr inbounds nuw i8, ptr %4412, i64 576
  %4440 = load <8 x double>, ptr %4439, align 64, !tbaa !26
  %4441 = getelementptr inbounds nuw i8, ptr %4412, i64 2816
  %4442 = load <8 x double>, ptr %4441, align 64, !tbaa !26
  %4443 = fdiv <8 x double> %4440, %4442
  %4444 = getelementptr inbounds nuw i8, ptr %4412, i64 192
  %4445 = load <8 x double>, ptr %4444, align 64, !tbaa !26
  %4446 = getelementptr inbounds nuw i8, ptr %4412, i64 256
  %4447 = load <8 x double>, ptr %4446, align 64, !tbaa !26
  %4448 = getelementptr inbounds nuw i8, ptr %4412, i64 320
  %4449 = load <8 x double>, ptr %4448, align 64, !tbaa !26
  %4450 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4430, <8 x double> %4449, <8 x double> %4447)
  %4451 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4430, <8 x double> %4450, <8 x double> %4445)
  %4452 = fdiv <8 x double> %4451, %4438
  %4453 = fmul <8 x double> %4430, %4452
  %4454 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4443, <8 x double> %4429, <8 x double> %4453)
  %4455 = fadd <8 x double> %4443, %4452
  %4456 = fdiv <8 x double> %4454, %4455
  br label %4457

4457:                                             ; preds = %4409, %4426
  %4458 = phi <8 x double> [ %4456, %4426 ], [ %4422, %4409 ]
  %4459 = getelementptr inbounds nuw i8, ptr %4412, i64 7552
  %4460 = load <8 x double>, ptr %4459, align 64, !tbaa !26
  %4461 = select <8 x i1> %4058, <8 x double> %4460, <8 x double> %4458
  store <8 x double> %4461, ptr %4459, align 64, !tbaa !26
  %4462 = add nuw nsw i64 %4410, 1
  %4463 = load i64, ptr %179, align 8, !tbaa !20
  %4464 = icmp slt i64 %4462, %4463
  br i1 %4464, label %4409, label %4103, !llvm.loop !141

4465:                                             ; preds = %4365
  %4466 = icmp eq <8 x i64> %4406, zeroinitializer
  %4467 = select <8 x i1> %4466, <8 x double> %4117, <8 x double> %4116
  store <8 x double> %4467, ptr %233, align 64, !tbaa !26
  %4468 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4469 = select <8 x i1> %4466, <8 x double> %4468, <8 x double> %4279
  store <8 x double> %4469, ptr %173, align 64, !tbaa !26
  %4470 = select <8 x i1> %4466, <8 x double> %4279, <8 x double> %4281
  store <8 x double> %4470, ptr %167, align 64, !tbaa !26
  %4471 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %4472 = select <8 x i1> %4466, <8 x double> %4471, <8 x double> %4316
  store <8 x double> %4472, ptr %264, align 64, !tbaa !26
  %4473 = select <8 x i1> %4466, <8 x double> %4316, <8 x double> %4367
  store <8 x double> %4473, ptr %265, align 64, !tbaa !26
  %4474 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %4475 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %4476 = select <8 x i1> %4466, <8 x double> %4475, <8 x double> %4474
  store <8 x double> %4476, ptr %266, align 64, !tbaa !26
  %4477 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %4478 = select <8 x i1> %4466, <8 x double> %4474, <8 x double> %4477
  store <8 x double> %4478, ptr %267, align 64, !tbaa !26
  %4479 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %4480 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %4481 = select <8 x i1> %4466, <8 x double> %4480, <8 x double> %4479
  store <8 x double> %4481, ptr %269, align 64, !tbaa !26
  %4482 = load <8 x double>, ptr %271, align 64, !tbaa !26
  %4483 = select <8 x i1> %4466, <8 x double> %4479, <8 x double> %4482
  store <8 x double> %4483, ptr %270, align 64, !tbaa !26
  %4484 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %4485 = load <8 x double>, ptr %272, align 64, !tbaa !26
  %4486 = select <8 x i1> %4466, <8 x double> %4485, <8 x double> %4484
  store <8 x double> %4486, ptr %272, align 64, !tbaa !26
  %4487 = load <8 x double>, ptr %274, align 64, !tbaa !26
  %4488 = select <8 x i1> %4466, <8 x double> %4484, <8 x double> %4487
  store <8 x double> %4488, ptr %273, align 64, !tbaa !26
  %4489 = load <8 x double>, ptr %276, align 64, !tbaa !26
  %4490 = load <8 x double>, ptr %275, align 64, !tbaa !26
  %4491 = select <8 x i1> %4466, <8 x double> %4490, <8 x double> %4489
  store <8 x double> %4491, ptr %275, align 64, !tbaa !26
  %4492 = load <8 x double>, ptr %277, align 64, !tbaa !26
  %4493 = select <8 x i1> %4466, <8 x double> %4489, <8 x double> %4492
  store <8 x double> %4493, ptr %276, align 64, !tbaa !26
  %4494 = xor <8 x i64> %4406, splat (i64 -1)
  br i1 %4150, label %4495, label %4889

4495:                                             ; preds = %4465, %4854
  %4496 = phi i64 [ %4866, %4854 ], [ 0, %4465 ]
  %4497 = load ptr, ptr %152, align 8, !tbaa !28
  %4498 = getelementptr inbounds nuw %struct.Piece, ptr %4497, i64 %4496
  %4499 = getelementptr inbounds nuw i8, ptr %4498, i64 1664
  %4500 = load <8 x double>, ptr %4499, align 64, !tbaa !26
  %4501 = fcmp ogt <8 x double> %4500, zeroinitializer
  %4502 = bitcast <8 x i1> %4501 to i8
  %4503 = icmp eq i8 %4502, 0
  br i1 %4503, label %4761, label %4504

4504:                                             ; preds = %4495
  %4505 = load i64, ptr %141, align 16, !tbaa !21
  %4506 = add i64 %4505, -1
  %4507 = getelementptr inbounds nuw i8, ptr %4498, i64 4672
  %4508 = load <8 x double>, ptr %4507, align 64, !tbaa !26
  %4509 = getelementptr inbounds nuw i8, ptr %4498, i64 3776
  %4510 = load <8 x double>, ptr %4509, align 64, !tbaa !26
  %4511 = getelementptr inbounds nuw i8, ptr %4498, i64 8512
  %4512 = load i64, ptr %4511, align 64, !tbaa !31
  %4513 = icmp sgt i64 %4505, %4512
  br i1 %4513, label %4522, label %4514

4514:                                             ; preds = %4504
  %4515 = getelementptr inbounds nuw i8, ptr %4498, i64 8672
  %4516 = load ptr, ptr %4515, align 32, !tbaa !75
  %4517 = getelementptr inbounds <8 x double>, ptr %4516, i64 %4506
  %4518 = load <8 x double>, ptr %4517, align 64, !tbaa !26
  %4519 = getelementptr inbounds nuw i8, ptr %4498, i64 1536
  %4520 = load <8 x double>, ptr %4519, align 64, !tbaa !26
  %4521 = fmul <8 x double> %4518, %4520
  br label %4531

4522:                                             ; preds = %4504
  %4523 = getelementptr inbounds nuw i8, ptr %4498, i64 1536
  %4524 = load <8 x double>, ptr %4523, align 64, !tbaa !26
  %4525 = getelementptr inbounds nuw i8, ptr %4498, i64 8672
  %4526 = load ptr, ptr %4525, align 32, !tbaa !75
  %4527 = getelementptr inbounds <8 x double>, ptr %4526, i64 %4506
  %4528 = load <8 x double>, ptr %4527, align 64, !tbaa !26
  %4529 = fsub <8 x double> %4508, %4524
  %4530 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4528, <8 x double> %4529, <8 x double> %4524)
  br label %4531

4531:                                             ; preds = %4522, %4514
  %4532 = phi <8 x double> [ %4520, %4514 ], [ %4524, %4522 ]
  %4533 = phi <8 x double> [ %4521, %4514 ], [ %4530, %4522 ]
  %4534 = getelementptr inbounds nuw i8, ptr %4498, i64 3008
  %4535 = load <8 x double>, ptr %4534, align 64, !tbaa !26
  %4536 = fcmp ole <8 x double> %4533, %4535
  %4537 = getelementptr inbounds nuw i8, ptr %4498, i64 7616
  %4538 = load <8 x double>, ptr %4537, align 64, !tbaa !26
  %4539 = fcmp oeq <8 x double> %4538, zeroinitializer
  %4540 = select <8 x i1> %4539, <8 x i1> %4536, <8 x i1> zeroinitializer
  %4541 = select <8 x i1> %4540, <8 x i64> %4406, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %4542 = xor <8 x i64> %4541, %4406
  store <8 x i64> %4542, ptr %12, align 64, !tbaa !26
  %4543 = fsub <8 x double> %4508, %4510
  %4544 = getelementptr inbounds nuw i8, ptr %4498, i64 1536
  %4545 = fsub <8 x double> %4510, %4532
  %4546 = fdiv <8 x double> %4543, %4545
  %4547 = getelementptr inbounds nuw i8, ptr %4498, i64 8616
  %4548 = load ptr, ptr %4547, align 8, !tbaa !67
  %4549 = getelementptr inbounds <8 x double>, ptr %4548, i64 %4512
  %4550 = load <8 x double>, ptr %4549, align 64, !tbaa !26
  %4551 = getelementptr inbounds nuw i8, ptr %4498, i64 8624
  %4552 = load ptr, ptr %4551, align 16, !tbaa !50
  %4553 = getelementptr inbounds <8 x double>, ptr %4552, i64 %4512
  %4554 = load <8 x double>, ptr %4553, align 64, !tbaa !26
  %4555 = icmp eq <8 x i64> %4541, zeroinitializer
  %4556 = select <8 x i1> %4555, <8 x double> %4554, <8 x double> %4550
  store <8 x double> %4556, ptr %4553, align 64, !tbaa !26
  %4557 = load i64, ptr %4511, align 64, !tbaa !31
  %4558 = add nsw i64 %4557, 1
  %4559 = icmp slt i64 %4558, %4506
  br i1 %4559, label %4560, label %4564

4560:                                             ; preds = %4531
  %4561 = getelementptr inbounds nuw i8, ptr %4498, i64 8688
  br label %4604

4562:                                             ; preds = %4604
  %4563 = load i64, ptr %4511, align 64, !tbaa !31
  br label %4564

4564:                                             ; preds = %4562, %4531
  %4565 = phi i64 [ %4557, %4531 ], [ %4563, %4562 ]
  %4566 = phi <8 x double> [ %4550, %4531 ], [ %4609, %4562 ]
  %4567 = icmp sgt i64 %4505, %4565
  br i1 %4567, label %4575, label %4568

4568:                                             ; preds = %4564
  %4569 = getelementptr inbounds nuw i8, ptr %4498, i64 8672
  %4570 = load ptr, ptr %4569, align 32, !tbaa !75
  %4571 = getelementptr inbounds <8 x double>, ptr %4570, i64 %4506
  %4572 = load <8 x double>, ptr %4571, align 64, !tbaa !26
  %4573 = load <8 x double>, ptr %4544, align 64, !tbaa !26
  %4574 = fmul <8 x double> %4572, %4573
  br label %4583

4575:                                             ; preds = %4564
  %4576 = load <8 x double>, ptr %4544, align 64, !tbaa !26
  %4577 = getelementptr inbounds nuw i8, ptr %4498, i64 8672
  %4578 = load ptr, ptr %4577, align 32, !tbaa !75
  %4579 = getelementptr inbounds <8 x double>, ptr %4578, i64 %4506
  %4580 = load <8 x double>, ptr %4579, align 64, !tbaa !26
  %4581 = fsub <8 x double> %4510, %4576
  %4582 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4580, <8 x double> %4581, <8 x double> %4576)
  br label %4583

4583:                                             ; preds = %4575, %4568
  %4584 = phi <8 x double> [ %4574, %4568 ], [ %4582, %4575 ]
  %4585 = load ptr, ptr %4547, align 8, !tbaa !67
  %4586 = getelementptr inbounds <8 x double>, ptr %4585, i64 %4506
  %4587 = load <8 x double>, ptr %4586, align 64, !tbaa !26
  %4588 = load ptr, ptr %4551, align 16, !tbaa !50
  %4589 = getelementptr inbounds <8 x double>, ptr %4588, i64 %4506
  %4590 = fsub <8 x double> %4566, %4587
  %4591 = fsub <8 x double> %4533, %4584
  %4592 = load <8 x double>, ptr %4534, align 64, !tbaa !26
  %4593 = fsub <8 x double> %4592, %4584
  %4594 = fdiv <8 x double> %4591, %4593
  %4595 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4590, <8 x double> %4594, <8 x double> %4587)
  %4596 = load <8 x double>, ptr %4589, align 64, !tbaa !26
  %4597 = select <8 x i1> %4555, <8 x double> %4596, <8 x double> %4595
  store <8 x double> %4597, ptr %4589, align 64, !tbaa !26
  %4598 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4542)
  %4599 = icmp eq i64 %4598, 0
  br i1 %4599, label %4760, label %4600

4600:                                             ; preds = %4583
  %4601 = getelementptr inbounds nuw i8, ptr %4498, i64 8672
  %4602 = getelementptr inbounds nuw i8, ptr %4498, i64 3136
  %4603 = getelementptr inbounds nuw i8, ptr %4498, i64 832
  br label %4622

4604:                                             ; preds = %4560, %4604
  %4605 = phi i64 [ %4558, %4560 ], [ %4620, %4604 ]
  %4606 = phi <8 x double> [ %4550, %4560 ], [ %4609, %4604 ]
  %4607 = load ptr, ptr %4547, align 8, !tbaa !67
  %4608 = getelementptr inbounds <8 x double>, ptr %4607, i64 %4605
  %4609 = load <8 x double>, ptr %4608, align 64, !tbaa !26
  %4610 = load ptr, ptr %4551, align 16, !tbaa !50
  %4611 = getelementptr inbounds <8 x double>, ptr %4610, i64 %4605
  %4612 = fsub <8 x double> %4606, %4609
  %4613 = load ptr, ptr %4561, align 16, !tbaa !142
  %4614 = getelementptr inbounds <8 x double>, ptr %4613, i64 %4605
  %4615 = load <8 x double>, ptr %4614, align 64, !tbaa !26
  %4616 = fmul <8 x double> %4546, %4615
  %4617 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4612, <8 x double> %4616, <8 x double> %4609)
  %4618 = load <8 x double>, ptr %4611, align 64, !tbaa !26
  %4619 = select <8 x i1> %4555, <8 x double> %4618, <8 x double> %4617
  store <8 x double> %4619, ptr %4611, align 64, !tbaa !26
  %4620 = add nsw i64 %4605, 1
  %4621 = icmp eq i64 %4620, %4506
  br i1 %4621, label %4562, label %4604, !llvm.loop !143

4622:                                             ; preds = %4600, %4757
  %4623 = phi i64 [ 0, %4600 ], [ %4758, %4757 ]
  %4624 = getelementptr inbounds nuw i64, ptr %12, i64 %4623
  %4625 = load i64, ptr %4624, align 8, !tbaa !30
  %4626 = icmp eq i64 %4625, 0
  br i1 %4626, label %4757, label %4627

4627:                                             ; preds = %4622
  %4628 = load i64, ptr %141, align 16, !tbaa !21
  %4629 = load i64, ptr %4511, align 64, !tbaa !31
  %4630 = getelementptr inbounds nuw double, ptr %4544, i64 %4623
  %4631 = load double, ptr %4630, align 8, !tbaa !44
  %4632 = getelementptr inbounds nuw double, ptr %4534, i64 %4623
  %4633 = load double, ptr %4632, align 8, !tbaa !44
  %4634 = add nsw i64 %4628, -1
  %4635 = icmp sgt i64 %4628, %4629
  br i1 %4635, label %4636, label %4757

4636:                                             ; preds = %4627
  %4637 = getelementptr inbounds nuw double, ptr %4509, i64 %4623
  %4638 = load double, ptr %4637, align 8, !tbaa !44
  %4639 = getelementptr inbounds nuw double, ptr %4507, i64 %4623
  %4640 = load double, ptr %4639, align 8, !tbaa !44
  %4641 = load ptr, ptr %4601, align 32
  %4642 = getelementptr i8, ptr %4641, i64 64
  %4643 = getelementptr double, ptr %4642, i64 %4623
  %4644 = fsub double %4638, %4631
  %4645 = getelementptr double, ptr %4641, i64 %4623
  %4646 = fsub double %4640, %4631
  %4647 = load ptr, ptr %4547, align 8, !tbaa !67
  %4648 = getelementptr double, ptr %4647, i64 %4623
  %4649 = load ptr, ptr %4551, align 16, !tbaa !50
  %4650 = getelementptr double, ptr %4649, i64 %4623
  %4651 = getelementptr <8 x double>, ptr %4645, i64 %4634
  br label %4679

4652:                                             ; preds = %4725
  %4653 = getelementptr inbounds nuw double, ptr %4537, i64 %4623
  %4654 = load double, ptr %4653, align 8, !tbaa !44
  %4655 = fcmp ogt double %4654, 0.000000e+00
  %4656 = fcmp ogt double %4736, 0.000000e+00
  %4657 = select i1 %4655, i1 %4656, i1 false
  br i1 %4657, label %4658, label %4757

4658:                                             ; preds = %4652
  %4659 = getelementptr inbounds nuw double, ptr %4602, i64 %4623
  %4660 = getelementptr inbounds nuw double, ptr %4603, i64 %4623
  %4661 = sub i64 %4628, %4629
  %4662 = add i64 %4629, 1
  %4663 = and i64 %4661, 1
  %4664 = icmp eq i64 %4663, 0
  br i1 %4664, label %4674, label %4665

4665:                                             ; preds = %4658
  %4666 = load double, ptr %4659, align 8, !tbaa !44
  %4667 = load double, ptr %4660, align 8, !tbaa !44
  %4668 = fmul double %4736, %4667
  %4669 = fdiv double %4666, %4668
  %4670 = getelementptr <8 x double>, ptr %4650, i64 %4629
  %4671 = load double, ptr %4670, align 8, !tbaa !44
  %4672 = fmul double %4671, %4669
  store double %4672, ptr %4670, align 8, !tbaa !44
  %4673 = add nsw i64 %4629, 1
  br label %4674

4674:                                             ; preds = %4665, %4658
  %4675 = phi i64 [ %4629, %4658 ], [ %4673, %4665 ]
  %4676 = icmp eq i64 %4628, %4662
  br i1 %4676, label %4757, label %4677

4677:                                             ; preds = %4674
  %4678 = getelementptr i8, ptr %4650, i64 64
  br label %4739

4679:                                             ; preds = %4725, %4636
  %4680 = phi double [ 0.000000e+00, %4636 ], [ %4736, %4725 ]
  %4681 = phi i64 [ %4634, %4636 ], [ %4737, %4725 ]
  %4682 = icmp eq i64 %4681, %4634
  br i1 %4682, label %4683, label %4686

4683:                                             ; preds = %4679
  %4684 = load double, ptr %4651, align 8, !tbaa !44
  %4685 = tail call noundef double @llvm.fmuladd.f64(double %4684, double %4644, double %4631)
  br label %4697

4686:                                             ; preds = %4679
  %4687 = getelementptr <8 x double>, ptr %4643, i64 %4681
  %4688 = load double, ptr %4687, align 8, !tbaa !44
  %4689 = tail call noundef double @llvm.fmuladd.f64(double %4688, double %4644, double %4631)
  %4690 = getelementptr <8 x double>, ptr %4645, i64 %4681
  %4691 = load double, ptr %4690, align 8, !tbaa !44
  %4692 = tail call noundef double @llvm.fmuladd.f64(double %4691, double %4644, double %4631)
  %4693 = tail call noundef double @llvm.fmuladd.f64(double %4688, double %4646, double %4631)
  %4694 = fcmp ult double %4693, %4689
  br i1 %4694, label %4695, label %4697

4695:                                             ; preds = %4686
  %4696 = add nsw i64 %4681, 1
  br label %4697

4697:                                             ; preds = %4695, %4686, %4683
  %4698 = phi double [ %4692, %4695 ], [ %4692, %4686 ], [ %4685, %4683 ]
  %4699 = phi double [ %4689, %4695 ], [ %4689, %4686 ], [ %4633, %4683 ]
  %4700 = phi i64 [ %4696, %4695 ], [ %4681, %4686 ], [ %4634, %4683 ]
  %4701 = icmp sgt i64 %4700, %4629
  br i1 %4701, label %4702, label %4725

4702:                                             ; preds = %4697
  %4703 = load ptr, ptr %4547, align 8
  %4704 = getelementptr double, ptr %4703, i64 %4623
  br label %4705

4705:                                             ; preds = %4720, %4702
  %4706 = phi i64 [ %4700, %4702 ], [ %4723, %4720 ]
  %4707 = phi double [ 0.000000e+00, %4702 ], [ %4722, %4720 ]
  %4708 = phi double [ %4699, %4702 ], [ %4721, %4720 ]
  %4709 = getelementptr <8 x double>, ptr %4645, i64 %4706
  %4710 = load double, ptr %4709, align 8, !tbaa !44
  %4711 = tail call noundef double @llvm.fmuladd.f64(double %4710, double %4646, double %4631)
  %4712 = fcmp ogt double %4711, %4698
  br i1 %4712, label %4713, label %4725

4713:                                             ; preds = %4705
  %4714 = fcmp ogt double %4708, %4711
  br i1 %4714, label %4715, label %4720

4715:                                             ; preds = %4713
  %4716 = getelementptr <8 x double>, ptr %4704, i64 %4706
  %4717 = load double, ptr %4716, align 8, !tbaa !44
  %4718 = fsub double %4708, %4711
  %4719 = tail call double @llvm.fmuladd.f64(double %4717, double %4718, double %4707)
  br label %4720

4720:                                             ; preds = %4715, %4713
  %4721 = phi double [ %4711, %4715 ], [ %4708, %4713 ]
  %4722 = phi double [ %4719, %4715 ], [ %4707, %4713 ]
  %4723 = add nsw i64 %4706, -1
  %4724 = icmp sgt i64 %4723, %4629
  br i1 %4724, label %4705, label %4725, !llvm.loop !144

4725:                                             ; preds = %4720, %4705, %4697
  %4726 = phi double [ %4699, %4697 ], [ %4708, %4705 ], [ %4721, %4720 ]
  %4727 = phi double [ 0.000000e+00, %4697 ], [ %4707, %4705 ], [ %4722, %4720 ]
  %4728 = phi i64 [ %4700, %4697 ], [ %4706, %4705 ], [ %4629, %4720 ]
  %4729 = getelementptr <8 x double>, ptr %4648, i64 %4728
  %4730 = load double, ptr %4729, align 8, !tbaa !44
  %4731 = fsub double %4726, %4698
  %4732 = tail call double @llvm.fmuladd.f64(double %4730, double %4731, double %4727)
  %4733 = fsub double %4699, %4698
  %4734 = fdiv double %4732, %4733
  %4735 = getelementptr <8 x double>, ptr %4650, i64 %4681
  store double %4734, ptr %4735, align 8, !tbaa !44
  %4736 = fadd double %4680, %4732
  %4737 = add nsw i64 %4681, -1
  %4738 = icmp sgt i64 %4681, %4629
  br i1 %4738, label %4679, label %4652, !llvm.loop !145

4739:                                             ; preds = %4739, %4677
  %4740 = phi i64 [ %4675, %4677 ], [ %4755, %4739 ]
  %4741 = load double, ptr %4659, align 8, !tbaa !44
  %4742 = load double, ptr %4660, align 8, !tbaa !44
  %4743 = fmul double %4736, %4742
  %4744 = fdiv double %4741, %4743
  %4745 = getelementptr <8 x double>, ptr %4650, i64 %4740
  %4746 = load double, ptr %4745, align 8, !tbaa !44
  %4747 = fmul double %4746, %4744
  store double %4747, ptr %4745, align 8, !tbaa !44
  %4748 = load double, ptr %4659, align 8, !tbaa !44
  %4749 = load double, ptr %4660, align 8, !tbaa !44
  %4750 = fmul double %4736, %4749
  %4751 = fdiv double %4748, %4750
  %4752 = getelementptr <8 x double>, ptr %4678, i64 %4740
  %4753 = load double, ptr %4752, align 8, !tbaa !44
  %4754 = fmul double %4753, %4751
  store double %4754, ptr %4752, align 8, !tbaa !44
  %4755 = add nsw i64 %4740, 2
  %4756 = icmp eq i64 %4755, %4628
  br i1 %4756, label %4757, label %4739, !llvm.loop !146

4757:                                             ; preds = %4674, %4739, %4652, %4627, %4622
  %4758 = add nuw nsw i64 %4623, 1
  %4759 = icmp eq i64 %4758, 8
  br i1 %4759, label %4760, label %4622, !llvm.loop !147

4760:                                             ; preds = %4757, %4583
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  br label %4761

4761:                                             ; preds = %4495, %4760
  %4762 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %4763 = and <8 x i64> %4762, %4494
  %4764 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4763)
  %4765 = icmp eq i64 %4764, 0
  %4766 = getelementptr inbounds nuw i8, ptr %4498, i64 8584
  br i1 %4765, label %4767, label %4785

4767:                                             ; preds = %4761
  %4768 = getelementptr inbounds nuw i8, ptr %4498, i64 8592
  %4769 = getelementptr inbounds nuw i8, ptr %4498, i64 8600
  %4770 = load ptr, ptr %4769, align 8, !tbaa !35
  %4771 = load ptr, ptr %4768, align 8, !tbaa !35
  store ptr %4771, ptr %4769, align 8, !tbaa !35
  %4772 = load ptr, ptr %4766, align 8, !tbaa !35
  store ptr %4772, ptr %4768, align 8, !tbaa !35
  store ptr %4770, ptr %4766, align 8, !tbaa !35
  %4773 = getelementptr inbounds nuw i8, ptr %4498, i64 8704
  %4774 = getelementptr inbounds nuw i8, ptr %4498, i64 8712
  %4775 = getelementptr inbounds nuw i8, ptr %4498, i64 8720
  %4776 = load ptr, ptr %4775, align 8, !tbaa !35
  %4777 = load ptr, ptr %4774, align 8, !tbaa !35
  store ptr %4777, ptr %4775, align 8, !tbaa !35
  %4778 = load ptr, ptr %4773, align 8, !tbaa !35
  store ptr %4778, ptr %4774, align 8, !tbaa !35
  store ptr %4776, ptr %4773, align 8, !tbaa !35
  %4779 = getelementptr inbounds nuw i8, ptr %4498, i64 8752
  %4780 = getelementptr inbounds nuw i8, ptr %4498, i64 8760
  %4781 = getelementptr inbounds nuw i8, ptr %4498, i64 8768
  %4782 = load ptr, ptr %4781, align 8, !tbaa !35
  %4783 = load ptr, ptr %4780, align 8, !tbaa !35
  store ptr %4783, ptr %4781, align 8, !tbaa !35
  %4784 = load ptr, ptr %4779, align 8, !tbaa !35
  store ptr %4784, ptr %4780, align 8, !tbaa !35
  store ptr %4782, ptr %4779, align 8, !tbaa !35
  br label %4850

4785:                                             ; preds = %4761
  %4786 = load ptr, ptr %4766, align 8, !tbaa !60
  %4787 = getelementptr inbounds nuw i8, ptr %4498, i64 8592
  %4788 = load ptr, ptr %4787, align 16, !tbaa !49
  %4789 = getelementptr inbounds nuw i8, ptr %4498, i64 8600
  %4790 = load ptr, ptr %4789, align 8, !tbaa !59
  %4791 = load i64, ptr %141, align 16, !tbaa !21
  %4792 = icmp sgt i64 %4791, 0
  br i1 %4792, label %4793, label %4806

4793:                                             ; preds = %4785, %4793
  %4794 = phi i64 [ %4804, %4793 ], [ 0, %4785 ]
  %4795 = getelementptr inbounds nuw <8 x double>, ptr %4790, i64 %4794
  %4796 = getelementptr inbounds nuw <8 x double>, ptr %4788, i64 %4794
  %4797 = load <8 x double>, ptr %4796, align 64, !tbaa !26
  %4798 = load <8 x double>, ptr %4795, align 64, !tbaa !26
  %4799 = select <8 x i1> %4466, <8 x double> %4798, <8 x double> %4797
  store <8 x double> %4799, ptr %4795, align 64, !tbaa !26
  %4800 = getelementptr inbounds nuw <8 x double>, ptr %4786, i64 %4794
  %4801 = load <8 x double>, ptr %4800, align 64, !tbaa !26
  %4802 = load <8 x double>, ptr %4796, align 64, !tbaa !26
  %4803 = select <8 x i1> %4466, <8 x double> %4802, <8 x double> %4801
  store <8 x double> %4803, ptr %4796, align 64, !tbaa !26
  %4804 = add nuw nsw i64 %4794, 1
  %4805 = icmp eq i64 %4804, %4791
  br i1 %4805, label %4806, label %4793, !llvm.loop !148

4806:                                             ; preds = %4793, %4785
  %4807 = getelementptr inbounds nuw i8, ptr %4498, i64 8704
  %4808 = load ptr, ptr %4807, align 64, !tbaa !130
  %4809 = getelementptr inbounds nuw i8, ptr %4498, i64 8712
  %4810 = load ptr, ptr %4809, align 8, !tbaa !53
  %4811 = getelementptr inbounds nuw i8, ptr %4498, i64 8720
  %4812 = load ptr, ptr %4811, align 16, !tbaa !64
  %4813 = load i64, ptr %142, align 8, !tbaa !22
  %4814 = icmp sgt i64 %4813, 0
  br i1 %4814, label %4815, label %4850

4815:                                             ; preds = %4806, %4815
  %4816 = phi i64 [ %4826, %4815 ], [ 0, %4806 ]
  %4817 = getelementptr inbounds nuw <8 x double>, ptr %4812, i64 %4816
  %4818 = getelementptr inbounds nuw <8 x double>, ptr %4810, i64 %4816
  %4819 = load <8 x double>, ptr %4818, align 64, !tbaa !26
  %4820 = load <8 x double>, ptr %4817, align 64, !tbaa !26
  %4821 = select <8 x i1> %4466, <8 x double> %4820, <8 x double> %4819
  store <8 x double> %4821, ptr %4817, align 64, !tbaa !26
  %4822 = getelementptr inbounds nuw <8 x double>, ptr %4808, i64 %4816
  %4823 = load <8 x double>, ptr %4822, align 64, !tbaa !26
  %4824 = load <8 x double>, ptr %4818, align 64, !tbaa !26
  %4825 = select <8 x i1> %4466, <8 x double> %4824, <8 x double> %4823
  store <8 x double> %4825, ptr %4818, align 64, !tbaa !26
  %4826 = add nuw nsw i64 %4816, 1
  %4827 = icmp eq i64 %4826, %4813
  br i1 %4827, label %4828, label %4815, !llvm.loop !148

4828:                                             ; preds = %4815
  %4829 = load i64, ptr %142, align 8, !tbaa !22
  %4830 = getelementptr inbounds nuw i8, ptr %4498, i64 8752
  %4831 = load ptr, ptr %4830, align 16, !tbaa !93
  %4832 = getelementptr inbounds nuw i8, ptr %4498, i64 8760
  %4833 = load ptr, ptr %4832, align 8, !tbaa !52
  %4834 = getelementptr inbounds nuw i8, ptr %4498, i64 8768
  %4835 = load ptr, ptr %4834, align 64, !tbaa !62
  %4836 = icmp sgt i64 %4829, 0
  br i1 %4836, label %4837, label %4850

4837:                                             ; preds = %4828, %4837
  %4838 = phi i64 [ %4848, %4837 ], [ 0, %4828 ]
  %4839 = getelementptr inbounds nuw <8 x double>, ptr %4835, i64 %4838
  %4840 = getelementptr inbounds nuw <8 x double>, ptr %4833, i64 %4838
  %4841 = load <8 x double>, ptr %4840, align 64, !tbaa !26
  %4842 = load <8 x double>, ptr %4839, align 64, !tbaa !26
  %4843 = select <8 x i1> %4466, <8 x double> %4842, <8 x double> %4841
  store <8 x double> %4843, ptr %4839, align 64, !tbaa !26
  %4844 = getelementptr inbounds nuw <8 x double>, ptr %4831, i64 %4838
  %4845 = load <8 x double>, ptr %4844, align 64, !tbaa !26
  %4846 = load <8 x double>, ptr %4840, align 64, !tbaa !26
  %4847 = select <8 x i1> %4466, <8 x double> %4846, <8 x double> %4845
  store <8 x double> %4847, ptr %4840, align 64, !tbaa !26
  %4848 = add nuw nsw i64 %4838, 1
  %4849 = icmp eq i64 %4848, %4829
  br i1 %4849, label %4850, label %4837, !llvm.loop !148

4850:                                             ; preds = %4837, %4806, %4828, %4767
  %4851 = getelementptr inbounds nuw i8, ptr %4498, i64 4736
  %4852 = getelementptr inbounds nuw i8, ptr %4498, i64 3840
  %4853 = getelementptr inbounds nuw i8, ptr %4498, i64 2944
  br label %4869

4854:                                             ; preds = %4869
  %4855 = getelementptr inbounds nuw i8, ptr %4498, i64 8384
  %4856 = getelementptr inbounds nuw i8, ptr %4498, i64 6080
  %4857 = load <8 x double>, ptr %4856, align 64, !tbaa !26
  %4858 = fcmp ogt <8 x double> %4857, zeroinitializer
  %4859 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4860 = fcmp une <8 x double> %4859, splat (double 2.000000e+00)
  %4861 = and <8 x i1> %4858, %4860
  %4862 = select <8 x i1> %4861, <8 x i64> %4406, <8 x i64> zeroinitializer
  %4863 = load <8 x i64>, ptr %4855, align 64, !tbaa !26
  %4864 = and <8 x i64> %4863, %4494
  %4865 = or <8 x i64> %4862, %4864
  store <8 x i64> %4865, ptr %4855, align 64, !tbaa !26
  %4866 = add nuw nsw i64 %4496, 1
  %4867 = load i64, ptr %179, align 8, !tbaa !20
  %4868 = icmp slt i64 %4866, %4867
  br i1 %4868, label %4495, label %4881, !llvm.loop !149

4869:                                             ; preds = %4850, %4869
  %4870 = phi i64 [ 0, %4850 ], [ %4879, %4869 ]
  %4871 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4851, i64 0, i64 %4870
  %4872 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4852, i64 0, i64 %4870
  %4873 = load <8 x double>, ptr %4872, align 64, !tbaa !26
  %4874 = load <8 x double>, ptr %4871, align 64, !tbaa !26
  %4875 = select <8 x i1> %4466, <8 x double> %4874, <8 x double> %4873
  store <8 x double> %4875, ptr %4871, align 64, !tbaa !26
  %4876 = getelementptr inbounds nuw [14 x <8 x double>], ptr %4853, i64 0, i64 %4870
  %4877 = load <8 x double>, ptr %4876, align 64, !tbaa !26
  %4878 = select <8 x i1> %4466, <8 x double> %4873, <8 x double> %4877
  store <8 x double> %4878, ptr %4872, align 64, !tbaa !26
  %4879 = add nuw nsw i64 %4870, 1
  %4880 = icmp eq i64 %4879, 14
  br i1 %4880, label %4854, label %4869, !llvm.loop !150

4881:                                             ; preds = %4854
  %4882 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4883 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4884 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4885 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4886 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %4887 = fdiv <8 x double> %4884, %4119
  %4888 = icmp sgt i64 %4867, 0
  br label %4889

4889:                                             ; preds = %4465, %4881
  %4890 = phi <8 x double> [ %4887, %4881 ], [ %4129, %4465 ]
  %4891 = phi i1 [ %4888, %4881 ], [ false, %4465 ]
  %4892 = phi <8 x double> [ %4886, %4881 ], [ %4108, %4465 ]
  %4893 = phi <8 x double> [ %4885, %4881 ], [ %4394, %4465 ]
  %4894 = phi <8 x double> [ %4883, %4881 ], [ %4125, %4465 ]
  %4895 = phi <8 x double> [ %4882, %4881 ], [ %4123, %4465 ]
  %4896 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %4897 = fadd <8 x double> %4896, %4895
  %4898 = select <8 x i1> %4466, <8 x double> %4896, <8 x double> %4897
  store <8 x double> %4898, ptr %159, align 64, !tbaa !26
  %4899 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %4900 = select <8 x i1> %4466, <8 x double> %4899, <8 x double> %4895
  store <8 x double> %4900, ptr %174, align 64, !tbaa !26
  %4901 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4902 = fadd <8 x double> %4901, splat (double 1.000000e+00)
  %4903 = select <8 x i1> %4466, <8 x double> %4901, <8 x double> %4902
  store <8 x double> %4903, ptr %145, align 64, !tbaa !26
  %4904 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4905 = fcmp olt <8 x double> %4904, %4895
  %4906 = select <8 x i1> %4466, <8 x i1> splat (i1 true), <8 x i1> %4905
  %4907 = select <8 x i1> %4906, <8 x double> %4904, <8 x double> %4895
  store <8 x double> %4907, ptr %147, align 64, !tbaa !26
  %4908 = fcmp une <8 x double> %4894, zeroinitializer
  %4909 = fcmp ueq <8 x double> %4118, zeroinitializer
  %4910 = or <8 x i1> %4909, %4908
  %4911 = fcmp olt <8 x double> %4890, splat (double 1.800000e+00)
  %4912 = select <8 x i1> %4911, <8 x double> %4890, <8 x double> splat (double 1.800000e+00)
  %4913 = select <8 x i1> %4910, <8 x double> splat (double 1.800000e+00), <8 x double> %4912
  %4914 = fcmp ogt <8 x double> %4913, splat (double 2.000000e-01)
  %4915 = select <8 x i1> %4914, <8 x double> %4913, <8 x double> splat (double 2.000000e-01)
  %4916 = fmul <8 x double> %4895, %4915
  %4917 = fmul <8 x double> %4895, splat (double 4.000000e+00)
  %4918 = fcmp olt <8 x double> %4893, %4917
  %4919 = select <8 x i1> %4918, <8 x double> %4893, <8 x double> %4917
  %4920 = fcmp ogt <8 x double> %4916, %4919
  %4921 = select <8 x i1> %4920, <8 x double> %4916, <8 x double> %4919
  %4922 = select <8 x i1> %4466, <8 x double> %4893, <8 x double> zeroinitializer
  store <8 x double> %4922, ptr %182, align 64, !tbaa !26
  %4923 = select <8 x i1> %4466, <8 x double> %4892, <8 x double> zeroinitializer
  store <8 x double> %4923, ptr %184, align 64, !tbaa !26
  %4924 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %4925 = and <8 x i64> %4924, %4494
  store <8 x i64> %4925, ptr %175, align 64, !tbaa !26
  %4926 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %4927 = and <8 x i64> %4926, %4494
  store <8 x i64> %4927, ptr %176, align 64, !tbaa !26
  %4928 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %4929 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %4930 = select <8 x i1> %4466, <8 x double> %4929, <8 x double> %4928
  store <8 x double> %4930, ptr %169, align 64, !tbaa !26
  br i1 %4891, label %4931, label %5396

4931:                                             ; preds = %4889, %5389
  %4932 = phi i64 [ %5391, %5389 ], [ 0, %4889 ]
  %4933 = phi <8 x double> [ %5390, %5389 ], [ %4921, %4889 ]
  %4934 = load ptr, ptr %152, align 8, !tbaa !28
  %4935 = getelementptr inbounds nuw %struct.Piece, ptr %4934, i64 %4932
  %4936 = getelementptr inbounds nuw i8, ptr %4935, i64 3904
  %4937 = load <8 x double>, ptr %4936, align 64, !tbaa !26
  %4938 = getelementptr inbounds nuw i8, ptr %4935, i64 1472
  %4939 = load <8 x double>, ptr %4938, align 64, !tbaa !26
  %4940 = fmul <8 x double> %4939, splat (double 1.001000e+00)
  %4941 = fcmp ole <8 x double> %4937, %4940
  %4942 = getelementptr inbounds nuw i8, ptr %4935, i64 1600
  %4943 = load <8 x double>, ptr %4942, align 64, !tbaa !26
  %4944 = getelementptr inbounds nuw i8, ptr %4935, i64 4160
  %4945 = load <8 x double>, ptr %4944, align 64, !tbaa !26
  %4946 = fsub <8 x double> %4943, %4945
  %4947 = fmul <8 x double> %4943, splat (double 1.000000e-04)
  %4948 = fcmp ole <8 x double> %4946, %4947
  %4949 = getelementptr inbounds nuw i8, ptr %4935, i64 8320
  %4950 = load <8 x i64>, ptr %4949, align 64, !tbaa !26
  %4951 = and <8 x i64> %4950, %4406
  %4952 = getelementptr inbounds nuw i8, ptr %4935, i64 7616
  %4953 = load <8 x double>, ptr %4952, align 64, !tbaa !26
  %4954 = fcmp oeq <8 x double> %4953, zeroinitializer
  %4955 = and <8 x i1> %4941, %4954
  %4956 = fcmp oeq <8 x double> %4953, splat (double 1.000000e+00)
  %4957 = and <8 x i1> %4948, %4956
  %4958 = or <8 x i1> %4955, %4957
  %4959 = select <8 x i1> %4958, <8 x i64> %4951, <8 x i64> zeroinitializer
  %4960 = fadd <8 x double> %4953, splat (double 1.000000e+00)
  %4961 = icmp eq <8 x i64> %4959, zeroinitializer
  %4962 = select <8 x i1> %4961, <8 x double> %4953, <8 x double> %4960
  store <8 x double> %4962, ptr %4952, align 64, !tbaa !26
  %4963 = getelementptr inbounds nuw i8, ptr %4935, i64 8384
  %4964 = load <8 x i64>, ptr %4963, align 64, !tbaa !26
  %4965 = or <8 x i64> %4959, %4964
  store <8 x i64> %4965, ptr %4963, align 64, !tbaa !26
  %4966 = getelementptr inbounds nuw i8, ptr %4935, i64 896
  %4967 = load <8 x double>, ptr %4966, align 64, !tbaa !26
  %4968 = getelementptr inbounds nuw i8, ptr %4935, i64 6016
  %4969 = load <8 x double>, ptr %4968, align 64, !tbaa !26
  %4970 = getelementptr inbounds nuw i8, ptr %4935, i64 6080
  %4971 = load <8 x double>, ptr %4970, align 64, !tbaa !26
  %4972 = fadd <8 x double> %4969, %4971
  %4973 = fcmp ogt <8 x double> %4972, zeroinitializer
  %4974 = xor <8 x i64> %4950, splat (i64 -1)
  %4975 = and <8 x i64> %4406, %4974
  %4976 = fcmp une <8 x double> %4967, zeroinitializer
  %4977 = or <8 x i1> %4976, %4973
  %4978 = getelementptr inbounds nuw i8, ptr %4935, i64 3968
  %4979 = load <8 x double>, ptr %4978, align 64, !tbaa !26
  %4980 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %4981 = fmul <8 x double> %4967, %4980
  %4982 = fcmp ogt <8 x double> %4981, splat (double 0x3E7AD7F29ABCAF48)
  %4983 = select <8 x i1> %4982, <8 x double> %4981, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4984 = fcmp ole <8 x double> %4979, %4983
  %4985 = select <8 x i1> %4984, <8 x i1> %4977, <8 x i1> zeroinitializer
  %4986 = select <8 x i1> %4985, <8 x i64> %4975, <8 x i64> zeroinitializer
  %4987 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4986)
  %4988 = icmp eq i64 %4987, 0
  br i1 %4988, label %5389, label %4989

4989:                                             ; preds = %4931
  %4990 = load i64, ptr %141, align 16, !tbaa !21
  %4991 = load i64, ptr %142, align 8, !tbaa !22
  %4992 = getelementptr inbounds nuw i8, ptr %4935, i64 3840
  %4993 = getelementptr inbounds nuw i8, ptr %4935, i64 4672
  %4994 = load <8 x double>, ptr %4993, align 64, !tbaa !26
  %4995 = getelementptr inbounds nuw i8, ptr %4935, i64 5952
  %4996 = load <8 x double>, ptr %4995, align 64, !tbaa !26
  %4997 = getelementptr inbounds nuw i8, ptr %4935, i64 832
  %4998 = load <8 x double>, ptr %4997, align 64, !tbaa !26
  %4999 = getelementptr inbounds nuw i8, ptr %4935, i64 8624
  %5000 = load ptr, ptr %4999, align 16, !tbaa !50
  %5001 = add nsw i64 %4990, -1
  %5002 = getelementptr inbounds <8 x double>, ptr %5000, i64 %5001
  %5003 = load <8 x double>, ptr %5002, align 64, !tbaa !26
  %5004 = fmul <8 x double> %4998, %5003
  %5005 = fneg <8 x double> %4979
  %5006 = fdiv <8 x double> %5005, %5004
  %5007 = fcmp ogt <8 x double> %5006, splat (double 0x3E7AD7F29ABCAF48)
  %5008 = select <8 x i1> %5007, <8 x double> %5006, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5009 = load <8 x double>, ptr %4935, align 64, !tbaa !26
  %5010 = fsub <8 x double> %5009, %5008
  %5011 = getelementptr inbounds nuw i8, ptr %4935, i64 2560
  %5012 = load <8 x double>, ptr %5011, align 64, !tbaa !26
  %5013 = getelementptr inbounds nuw i8, ptr %4935, i64 2624
  %5014 = load <8 x double>, ptr %5013, align 64, !tbaa !26
  %5015 = getelementptr inbounds nuw i8, ptr %4935, i64 2688
  %5016 = load <8 x double>, ptr %5015, align 64, !tbaa !26
  %5017 = getelementptr inbounds nuw i8, ptr %4935, i64 2752
  %5018 = load <8 x double>, ptr %5017, align 64, !tbaa !26
  %5019 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5010, <8 x double> %5018, <8 x double> %5016)
  %5020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5010, <8 x double> %5019, <8 x double> %5014)
  %5021 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5010, <8 x double> %5020, <8 x double> %5012)
  %5022 = fsub <8 x double> %4994, %5021
  %5023 = getelementptr inbounds nuw i8, ptr %4935, i64 8592
  %5024 = load ptr, ptr %5023, align 16, !tbaa !49
  %5025 = getelementptr inbounds <8 x double>, ptr %5024, i64 %5001
  %5026 = load <8 x double>, ptr %5025, align 64, !tbaa !26
  %5027 = getelementptr inbounds nuw i8, ptr %4935, i64 8512
  %5028 = load i64, ptr %5027, align 64, !tbaa !31
  %5029 = icmp sgt i64 %4990, %5028
  br i1 %5029, label %5038, label %5030

5030:                                             ; preds = %4989
  %5031 = getelementptr inbounds nuw i8, ptr %4935, i64 640
  %5032 = load <8 x double>, ptr %5031, align 64, !tbaa !26
  %5033 = getelementptr inbounds nuw i8, ptr %4935, i64 8600
  %5034 = load ptr, ptr %5033, align 8, !tbaa !59
  %5035 = getelementptr inbounds <8 x double>, ptr %5034, i64 %5001
  %5036 = load <8 x double>, ptr %5035, align 64, !tbaa !26
  %5037 = fmul <8 x double> %5036, %5032
  br label %5058

5038:                                             ; preds = %4989
  %5039 = getelementptr inbounds nuw i8, ptr %4935, i64 384
  %5040 = load <8 x double>, ptr %5039, align 64, !tbaa !26
  %5041 = getelementptr inbounds nuw i8, ptr %4935, i64 448
  %5042 = load <8 x double>, ptr %5041, align 64, !tbaa !26
  %5043 = getelementptr inbounds nuw i8, ptr %4935, i64 512
  %5044 = load <8 x double>, ptr %5043, align 64, !tbaa !26
  %5045 = fmul <8 x double> %5026, %5044
  %5046 = fmul <8 x double> %5045, splat (double 0x3FD5555555555555)
  %5047 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5042, <8 x double> splat (double 5.000000e-01), <8 x double> %5046)
  %5048 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5026, <8 x double> %5047, <8 x double> %5040)
  %5049 = getelementptr inbounds nuw i8, ptr %4935, i64 8600
  %5050 = load ptr, ptr %5049, align 8, !tbaa !59
  %5051 = getelementptr inbounds <8 x double>, ptr %5050, i64 %5001
  %5052 = load <8 x double>, ptr %5051, align 64, !tbaa !26
  %5053 = fmul <8 x double> %5052, %5044
  %5054 = fmul <8 x double> %5053, splat (double 0x3FD5555555555555)
  %5055 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5042, <8 x double> splat (double 5.000000e-01), <8 x double> %5054)
  %5056 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5052, <8 x double> %5055, <8 x double> %5040)
  %5057 = fmul <8 x double> %5052, %5056
  br label %5058

5058:                                             ; preds = %5038, %5030
  %5059 = phi ptr [ %5050, %5038 ], [ %5034, %5030 ]
  %5060 = phi <8 x double> [ %5048, %5038 ], [ %5032, %5030 ]
  %5061 = phi <8 x double> [ %5057, %5038 ], [ %5037, %5030 ]
  %5062 = phi ptr [ %5049, %5038 ], [ %5033, %5030 ]
  %5063 = sitofp i64 %4991 to double
  %5064 = insertelement <8 x double> poison, double %5063, i64 0
  %5065 = shufflevector <8 x double> %5064, <8 x double> poison, <8 x i32> zeroinitializer
  %5066 = fmul <8 x double> %5026, %5060
  %5067 = fdiv <8 x double> %5008, %5065
  %5068 = getelementptr i8, ptr %5024, i64 -64
  %5069 = getelementptr i8, ptr %5000, i64 -64
  %5070 = icmp sgt i64 %4990, 0
  br i1 %5070, label %5071, label %5172

5071:                                             ; preds = %5058
  %5072 = fmul <8 x double> %5026, %5060
  %5073 = getelementptr inbounds nuw i8, ptr %4935, i64 640
  %5074 = getelementptr inbounds nuw i8, ptr %4935, i64 384
  %5075 = getelementptr inbounds nuw i8, ptr %4935, i64 448
  %5076 = getelementptr inbounds nuw i8, ptr %4935, i64 512
  %5077 = getelementptr inbounds nuw i8, ptr %4935, i64 1536
  %5078 = getelementptr inbounds nuw i8, ptr %4935, i64 8672
  %5079 = icmp eq <8 x i64> %4986, zeroinitializer
  br label %5080

5080:                                             ; preds = %5071, %5159
  %5081 = phi <8 x double> [ %5026, %5071 ], [ %5140, %5159 ]
  %5082 = phi <8 x double> [ %5072, %5071 ], [ %5139, %5159 ]
  %5083 = phi <8 x double> [ %5021, %5071 ], [ %5141, %5159 ]
  %5084 = phi <8 x double> [ %5003, %5071 ], [ %5142, %5159 ]
  %5085 = phi i64 [ %5001, %5071 ], [ %5165, %5159 ]
  %5086 = icmp eq i64 %5085, 0
  br i1 %5086, label %5087, label %5091

5087:                                             ; preds = %5080
  %5088 = fdiv <8 x double> zeroinitializer, %5083
  %5089 = fsub <8 x double> %5082, %5082
  %5090 = fmul <8 x double> %5088, %5089
  br label %5136

5091:                                             ; preds = %5080
  %5092 = getelementptr <8 x double>, ptr %5068, i64 %5085
  %5093 = load <8 x double>, ptr %5092, align 64, !tbaa !26
  %5094 = load i64, ptr %5027, align 64, !tbaa !31
  %5095 = icmp sgt i64 %5085, %5094
  br i1 %5095, label %5098, label %5096

5096:                                             ; preds = %5091
  %5097 = load <8 x double>, ptr %5073, align 64, !tbaa !26
  br label %5106

5098:                                             ; preds = %5091
  %5099 = load <8 x double>, ptr %5074, align 64, !tbaa !26
  %5100 = load <8 x double>, ptr %5075, align 64, !tbaa !26
  %5101 = load <8 x double>, ptr %5076, align 64, !tbaa !26
  %5102 = fmul <8 x double> %5093, %5101
  %5103 = fmul <8 x double> %5102, splat (double 0x3FD5555555555555)
  %5104 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5100, <8 x double> splat (double 5.000000e-01), <8 x double> %5103)
  %5105 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5093, <8 x double> %5104, <8 x double> %5099)
  br label %5106

5106:                                             ; preds = %5096, %5098
  %5107 = phi <8 x double> [ %5105, %5098 ], [ %5097, %5096 ]
  %5108 = fmul <8 x double> %5093, %5107
  %5109 = icmp slt i64 %5085, %5094
  br i1 %5109, label %5110, label %5117

5110:                                             ; preds = %5106
  %5111 = load ptr, ptr %5078, align 32, !tbaa !75
  %5112 = getelementptr inbounds nuw <8 x double>, ptr %5111, i64 %5085
  %5113 = load <8 x double>, ptr %5112, align 64, !tbaa !26
  %5114 = load <8 x double>, ptr %5077, align 64, !tbaa !26
  %5115 = fmul <8 x double> %5113, %5114
  %5116 = fmul <8 x double> %5113, %5114
  br label %5126

5117:                                             ; preds = %5106
  %5118 = load <8 x double>, ptr %5077, align 64, !tbaa !26
  %5119 = load ptr, ptr %5078, align 32, !tbaa !75
  %5120 = getelementptr inbounds nuw <8 x double>, ptr %5119, i64 %5085
  %5121 = load <8 x double>, ptr %5120, align 64, !tbaa !26
  %5122 = fsub <8 x double> %5021, %5118
  %5123 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5121, <8 x double> %5122, <8 x double> %5118)
  %5124 = fsub <8 x double> %4994, %5118
  %5125 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5121, <8 x double> %5124, <8 x double> %5118)
  br label %5126

5126:                                             ; preds = %5117, %5110
  %5127 = phi <8 x double> [ %5115, %5110 ], [ %5123, %5117 ]
  %5128 = phi <8 x double> [ %5116, %5110 ], [ %5125, %5117 ]
  %5129 = fsub <8 x double> %5128, %5127
  %5130 = fsub <8 x double> %5083, %5127
  %5131 = fdiv <8 x double> %5129, %5130
  %5132 = fsub <8 x double> %5108, %5082
  %5133 = fmul <8 x double> %5132, %5131
  %5134 = getelementptr <8 x double>, ptr %5069, i64 %5085
  %5135 = load <8 x double>, ptr %5134, align 64, !tbaa !26
  br label %5136

5136:                                             ; preds = %5126, %5087
  %5137 = phi <8 x double> [ %5133, %5126 ], [ %5090, %5087 ]
  %5138 = phi <8 x double> [ %5131, %5126 ], [ %5088, %5087 ]
  %5139 = phi <8 x double> [ %5108, %5126 ], [ %5082, %5087 ]
  %5140 = phi <8 x double> [ %5093, %5126 ], [ %5081, %5087 ]
  %5141 = phi <8 x double> [ %5127, %5126 ], [ zeroinitializer, %5087 ]
  %5142 = phi <8 x double> [ %5135, %5126 ], [ %5084, %5087 ]
  %5143 = getelementptr inbounds nuw <8 x double>, ptr %5000, i64 %5085
  %5144 = fsub <8 x double> %5142, %5084
  %5145 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5144, <8 x double> %5138, <8 x double> %5084)
  %5146 = load <8 x double>, ptr %5143, align 64, !tbaa !26
  %5147 = select <8 x i1> %5079, <8 x double> %5146, <8 x double> %5145
  store <8 x double> %5147, ptr %5143, align 64, !tbaa !26
  %5148 = getelementptr inbounds nuw <8 x double>, ptr %5024, i64 %5085
  %5149 = load i64, ptr %5027, align 64, !tbaa !31
  %5150 = icmp slt i64 %5085, %5149
  br i1 %5150, label %5151, label %5153

5151:                                             ; preds = %5136
  %5152 = load <8 x double>, ptr %5073, align 64, !tbaa !26
  br label %5159

5153:                                             ; preds = %5136
  %5154 = load <8 x double>, ptr %5074, align 64, !tbaa !26
  %5155 = load <8 x double>, ptr %5075, align 64, !tbaa !26
  %5156 = load <8 x double>, ptr %5076, align 64, !tbaa !26
  %5157 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5081, <8 x double> %5156, <8 x double> %5155)
  %5158 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5081, <8 x double> %5157, <8 x double> %5154)
  br label %5159

5159:                                             ; preds = %5153, %5151
  %5160 = phi <8 x double> [ %5152, %5151 ], [ %5158, %5153 ]
  %5161 = fdiv <8 x double> %5137, %5160
  %5162 = fadd <8 x double> %5081, %5161
  %5163 = load <8 x double>, ptr %5148, align 64, !tbaa !26
  %5164 = select <8 x i1> %5079, <8 x double> %5163, <8 x double> %5162
  store <8 x double> %5164, ptr %5148, align 64, !tbaa !26
  %5165 = add nsw i64 %5085, -1
  %5166 = icmp sgt i64 %5085, 0
  br i1 %5166, label %5080, label %5167, !llvm.loop !151

5167:                                             ; preds = %5159
  %5168 = load ptr, ptr %5062, align 8, !tbaa !59
  %5169 = load i64, ptr %141, align 16, !tbaa !21
  %5170 = load i64, ptr %5027, align 64, !tbaa !31
  %5171 = add nsw i64 %5169, -1
  br label %5172

5172:                                             ; preds = %5167, %5058
  %5173 = phi i64 [ %5171, %5167 ], [ %5001, %5058 ]
  %5174 = phi i64 [ %5170, %5167 ], [ %5028, %5058 ]
  %5175 = phi i64 [ %5169, %5167 ], [ %4990, %5058 ]
  %5176 = phi ptr [ %5168, %5167 ], [ %5059, %5058 ]
  %5177 = getelementptr inbounds <8 x double>, ptr %5176, i64 %5173
  %5178 = load <8 x double>, ptr %5177, align 64, !tbaa !26
  %5179 = icmp sgt i64 %5175, %5174
  br i1 %5179, label %5183, label %5180

5180:                                             ; preds = %5172
  %5181 = getelementptr inbounds nuw i8, ptr %4935, i64 640
  %5182 = load <8 x double>, ptr %5181, align 64, !tbaa !26
  br label %5194

5183:                                             ; preds = %5172
  %5184 = getelementptr inbounds nuw i8, ptr %4935, i64 384
  %5185 = load <8 x double>, ptr %5184, align 64, !tbaa !26
  %5186 = getelementptr inbounds nuw i8, ptr %4935, i64 448
  %5187 = load <8 x double>, ptr %5186, align 64, !tbaa !26
  %5188 = getelementptr inbounds nuw i8, ptr %4935, i64 512
  %5189 = load <8 x double>, ptr %5188, align 64, !tbaa !26
  %5190 = fmul <8 x double> %5178, %5189
  %5191 = fmul <8 x double> %5190, splat (double 0x3FD5555555555555)
  %5192 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5187, <8 x double> splat (double 5.000000e-01), <8 x double> %5191)
  %5193 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5178, <8 x double> %5192, <8 x double> %5185)
  br label %5194

5194:                                             ; preds = %5183, %5180
  %5195 = phi <8 x double> [ %5182, %5180 ], [ %5193, %5183 ]
  %5196 = getelementptr i8, ptr %5176, i64 -64
  %5197 = icmp sgt i64 %5175, 0
  br i1 %5197, label %5198, label %5207

5198:                                             ; preds = %5194
  %5199 = fmul <8 x double> %5178, %5195
  %5200 = getelementptr inbounds nuw i8, ptr %4935, i64 640
  %5201 = getelementptr inbounds nuw i8, ptr %4935, i64 384
  %5202 = getelementptr inbounds nuw i8, ptr %4935, i64 448
  %5203 = getelementptr inbounds nuw i8, ptr %4935, i64 512
  %5204 = getelementptr inbounds nuw i8, ptr %4935, i64 1536
  %5205 = getelementptr inbounds nuw i8, ptr %4935, i64 8672
  %5206 = icmp eq <8 x i64> %4986, zeroinitializer
  br label %5215

5207:                                             ; preds = %5279, %5194
  %5208 = icmp sgt i64 %4991, 0
  br i1 %5208, label %5209, label %5287

5209:                                             ; preds = %5207
  %5210 = getelementptr inbounds nuw i8, ptr %4935, i64 8760
  %5211 = icmp eq <8 x i64> %4986, zeroinitializer
  %5212 = getelementptr inbounds nuw i8, ptr %4935, i64 8768
  %5213 = getelementptr inbounds nuw i8, ptr %4935, i64 8712
  %5214 = getelementptr inbounds nuw i8, ptr %4935, i64 8720
  br label %5358

5215:                                             ; preds = %5198, %5279
  %5216 = phi <8 x double> [ %5178, %5198 ], [ %5262, %5279 ]
  %5217 = phi <8 x double> [ %5199, %5198 ], [ %5263, %5279 ]
  %5218 = phi <8 x double> [ %5021, %5198 ], [ %5261, %5279 ]
  %5219 = phi i64 [ %5173, %5198 ], [ %5285, %5279 ]
  %5220 = icmp eq i64 %5219, 0
  %5221 = load i64, ptr %5027, align 64, !tbaa !31
  br i1 %5220, label %5260, label %5222

5222:                                             ; preds = %5215
  %5223 = getelementptr <8 x double>, ptr %5196, i64 %5219
  %5224 = load <8 x double>, ptr %5223, align 64, !tbaa !26
  %5225 = icmp sgt i64 %5219, %5221
  br i1 %5225, label %5228, label %5226

5226:                                             ; preds = %5222
  %5227 = load <8 x double>, ptr %5200, align 64, !tbaa !26
  br label %5236

5228:                                             ; preds = %5222
  %5229 = load <8 x double>, ptr %5201, align 64, !tbaa !26
  %5230 = load <8 x double>, ptr %5202, align 64, !tbaa !26
  %5231 = load <8 x double>, ptr %5203, align 64, !tbaa !26
  %5232 = fmul <8 x double> %5224, %5231
  %5233 = fmul <8 x double> %5232, splat (double 0x3FD5555555555555)
  %5234 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5230, <8 x double> splat (double 5.000000e-01), <8 x double> %5233)
  %5235 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5224, <8 x double> %5234, <8 x double> %5229)
  br label %5236

5236:                                             ; preds = %5226, %5228
  %5237 = phi <8 x double> [ %5235, %5228 ], [ %5227, %5226 ]
  %5238 = fmul <8 x double> %5224, %5237
  %5239 = icmp slt i64 %5219, %5221
  br i1 %5239, label %5240, label %5247

5240:                                             ; preds = %5236
  %5241 = load ptr, ptr %5205, align 32, !tbaa !75
  %5242 = getelementptr inbounds nuw <8 x double>, ptr %5241, i64 %5219
  %5243 = load <8 x double>, ptr %5242, align 64, !tbaa !26
  %5244 = load <8 x double>, ptr %5204, align 64, !tbaa !26
  %5245 = fmul <8 x double> %5243, %5244
  %5246 = fmul <8 x double> %5243, %5244
  br label %5256

5247:                                             ; preds = %5236
  %5248 = load <8 x double>, ptr %5204, align 64, !tbaa !26
  %5249 = load ptr, ptr %5205, align 32, !tbaa !75
  %5250 = getelementptr inbounds nuw <8 x double>, ptr %5249, i64 %5219
  %5251 = load <8 x double>, ptr %5250, align 64, !tbaa !26
  %5252 = fsub <8 x double> %5021, %5248
  %5253 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5251, <8 x double> %5252, <8 x double> %5248)
  %5254 = fsub <8 x double> %4994, %5248
  %5255 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5251, <8 x double> %5254, <8 x double> %5248)
  br label %5256

5256:                                             ; preds = %5247, %5240
  %5257 = phi <8 x double> [ %5245, %5240 ], [ %5253, %5247 ]
  %5258 = phi <8 x double> [ %5246, %5240 ], [ %5255, %5247 ]
  %5259 = fsub <8 x double> %5258, %5257
  br label %5260

5260:                                             ; preds = %5215, %5256
  %5261 = phi <8 x double> [ %5257, %5256 ], [ zeroinitializer, %5215 ]
  %5262 = phi <8 x double> [ %5224, %5256 ], [ %5216, %5215 ]
  %5263 = phi <8 x double> [ %5238, %5256 ], [ %5217, %5215 ]
  %5264 = phi <8 x double> [ %5259, %5256 ], [ zeroinitializer, %5215 ]
  %5265 = fsub <8 x double> %5218, %5261
  %5266 = fdiv <8 x double> %5264, %5265
  %5267 = fsub <8 x double> %5263, %5217
  %5268 = fmul <8 x double> %5267, %5266
  %5269 = getelementptr inbounds nuw <8 x double>, ptr %5176, i64 %5219
  %5270 = icmp slt i64 %5219, %5221
  br i1 %5270, label %5271, label %5273

5271:                                             ; preds = %5260
  %5272 = load <8 x double>, ptr %5200, align 64, !tbaa !26
  br label %5279

5273:                                             ; preds = %5260
  %5274 = load <8 x double>, ptr %5201, align 64, !tbaa !26
  %5275 = load <8 x double>, ptr %5202, align 64, !tbaa !26
  %5276 = load <8 x double>, ptr %5203, align 64, !tbaa !26
  %5277 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5216, <8 x double> %5276, <8 x double> %5275)
  %5278 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5216, <8 x double> %5277, <8 x double> %5274)
  br label %5279

5279:                                             ; preds = %5273, %5271
  %5280 = phi <8 x double> [ %5272, %5271 ], [ %5278, %5273 ]
  %5281 = fdiv <8 x double> %5268, %5280
  %5282 = fadd <8 x double> %5216, %5281
  %5283 = load <8 x double>, ptr %5269, align 64, !tbaa !26
  %5284 = select <8 x i1> %5206, <8 x double> %5283, <8 x double> %5282
  store <8 x double> %5284, ptr %5269, align 64, !tbaa !26
  %5285 = add nsw i64 %5219, -1
  %5286 = icmp sgt i64 %5219, 0
  br i1 %5286, label %5215, label %5207, !llvm.loop !151

5287:                                             ; preds = %5358, %5207
  %5288 = getelementptr inbounds nuw i8, ptr %4935, i64 8760
  %5289 = load ptr, ptr %5288, align 8, !tbaa !52
  %5290 = getelementptr inbounds <8 x double>, ptr %5289, i64 %4991
  %5291 = getelementptr inbounds nuw i8, ptr %4935, i64 1408
  %5292 = load <8 x double>, ptr %5291, align 64, !tbaa !26
  %5293 = load <8 x double>, ptr %5290, align 64, !tbaa !26
  %5294 = icmp eq <8 x i64> %4986, zeroinitializer
  %5295 = select <8 x i1> %5294, <8 x double> %5293, <8 x double> %5292
  store <8 x double> %5295, ptr %5290, align 64, !tbaa !26
  %5296 = getelementptr inbounds nuw i8, ptr %4935, i64 8768
  %5297 = load ptr, ptr %5296, align 64, !tbaa !62
  %5298 = getelementptr inbounds <8 x double>, ptr %5297, i64 %4991
  %5299 = load <8 x double>, ptr %5291, align 64, !tbaa !26
  %5300 = load <8 x double>, ptr %5298, align 64, !tbaa !26
  %5301 = select <8 x i1> %5294, <8 x double> %5300, <8 x double> %5299
  store <8 x double> %5301, ptr %5298, align 64, !tbaa !26
  %5302 = getelementptr inbounds nuw i8, ptr %4935, i64 4736
  %5303 = fneg <8 x double> %5022
  %5304 = getelementptr inbounds nuw i8, ptr %4935, i64 768
  %5305 = load <8 x double>, ptr %4992, align 64, !tbaa !26
  %5306 = select <8 x i1> %5294, <8 x double> %5305, <8 x double> %5010
  store <8 x double> %5306, ptr %4992, align 64, !tbaa !26
  %5307 = getelementptr inbounds nuw i8, ptr %4935, i64 3904
  %5308 = load <8 x double>, ptr %5307, align 64, !tbaa !26
  %5309 = select <8 x i1> %5294, <8 x double> %5308, <8 x double> %5021
  store <8 x double> %5309, ptr %5307, align 64, !tbaa !26
  %5310 = getelementptr inbounds nuw i8, ptr %4935, i64 4672
  %5311 = load <8 x double>, ptr %5310, align 64, !tbaa !26
  %5312 = select <8 x i1> %5294, <8 x double> %5311, <8 x double> %5021
  store <8 x double> %5312, ptr %5310, align 64, !tbaa !26
  %5313 = getelementptr inbounds nuw i8, ptr %4935, i64 4032
  %5314 = load <8 x double>, ptr %5313, align 64, !tbaa !26
  %5315 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5303, <8 x double> %5004, <8 x double> %5314)
  %5316 = select <8 x i1> %5294, <8 x double> %5314, <8 x double> %5315
  store <8 x double> %5316, ptr %5313, align 64, !tbaa !26
  %5317 = getelementptr inbounds nuw i8, ptr %4935, i64 3968
  %5318 = load <8 x double>, ptr %5317, align 64, !tbaa !26
  %5319 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5022, <8 x double> %5004, <8 x double> %5318)
  %5320 = select <8 x i1> %5294, <8 x double> %5318, <8 x double> %5319
  store <8 x double> %5320, ptr %5317, align 64, !tbaa !26
  %5321 = getelementptr inbounds nuw i8, ptr %4935, i64 4288
  %5322 = load <8 x double>, ptr %5321, align 64, !tbaa !26
  %5323 = load <8 x double>, ptr %5304, align 64, !tbaa !26
  %5324 = fneg <8 x double> %5323
  %5325 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5324, <8 x double> %4996, <8 x double> %5066)
  %5326 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5022, <8 x double> %5325, <8 x double> %5322)
  %5327 = select <8 x i1> %5294, <8 x double> %5322, <8 x double> %5326
  store <8 x double> %5327, ptr %5321, align 64, !tbaa !26
  %5328 = load <8 x double>, ptr %5302, align 64, !tbaa !26
  %5329 = select <8 x i1> %5294, <8 x double> %5328, <8 x double> %5010
  store <8 x double> %5329, ptr %5302, align 64, !tbaa !26
  %5330 = getelementptr inbounds nuw i8, ptr %4935, i64 4800
  %5331 = load <8 x double>, ptr %5330, align 64, !tbaa !26
  %5332 = select <8 x i1> %5294, <8 x double> %5331, <8 x double> %5021
  store <8 x double> %5332, ptr %5330, align 64, !tbaa !26
  %5333 = getelementptr inbounds nuw i8, ptr %4935, i64 5568
  %5334 = load <8 x double>, ptr %5333, align 64, !tbaa !26
  %5335 = select <8 x i1> %5294, <8 x double> %5334, <8 x double> %5021
  store <8 x double> %5335, ptr %5333, align 64, !tbaa !26
  %5336 = getelementptr inbounds nuw i8, ptr %4935, i64 4928
  %5337 = load <8 x double>, ptr %5336, align 64, !tbaa !26
  %5338 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5303, <8 x double> %5004, <8 x double> %5337)
  %5339 = select <8 x i1> %5294, <8 x double> %5337, <8 x double> %5338
  store <8 x double> %5339, ptr %5336, align 64, !tbaa !26
  %5340 = getelementptr inbounds nuw i8, ptr %4935, i64 4864
  %5341 = load <8 x double>, ptr %5340, align 64, !tbaa !26
  %5342 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5022, <8 x double> %5004, <8 x double> %5341)
  %5343 = select <8 x i1> %5294, <8 x double> %5341, <8 x double> %5342
  store <8 x double> %5343, ptr %5340, align 64, !tbaa !26
  %5344 = getelementptr inbounds nuw i8, ptr %4935, i64 5184
  %5345 = load <8 x double>, ptr %5344, align 64, !tbaa !26
  %5346 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5324, <8 x double> %4996, <8 x double> %5061)
  %5347 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5022, <8 x double> %5346, <8 x double> %5345)
  %5348 = select <8 x i1> %5294, <8 x double> %5345, <8 x double> %5347
  store <8 x double> %5348, ptr %5344, align 64, !tbaa !26
  %5349 = load <8 x i64>, ptr %4949, align 64, !tbaa !26
  %5350 = or <8 x i64> %5349, %4986
  store <8 x i64> %5350, ptr %4949, align 64, !tbaa !26
  %5351 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %5352 = fmul <8 x double> %5351, splat (double 4.000000e+01)
  %5353 = fcmp olt <8 x double> %4933, %5352
  %5354 = select <8 x i1> %5353, <8 x double> %4933, <8 x double> %5352
  %5355 = icmp ne <8 x i64> %4986, zeroinitializer
  %5356 = select <8 x i1> %4976, <8 x i1> %5355, <8 x i1> zeroinitializer
  %5357 = select <8 x i1> %5356, <8 x double> %5354, <8 x double> %4933
  br label %5389

5358:                                             ; preds = %5209, %5358
  %5359 = phi i64 [ 0, %5209 ], [ %5387, %5358 ]
  %5360 = uitofp nneg i64 %5359 to double
  %5361 = insertelement <8 x double> poison, double %5360, i64 0
  %5362 = shufflevector <8 x double> %5361, <8 x double> poison, <8 x i32> zeroinitializer
  %5363 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5362, <8 x double> %5067, <8 x double> %5010)
  %5364 = load <8 x double>, ptr %5011, align 64, !tbaa !26
  %5365 = load <8 x double>, ptr %5013, align 64, !tbaa !26
  %5366 = load <8 x double>, ptr %5015, align 64, !tbaa !26
  %5367 = load <8 x double>, ptr %5017, align 64, !tbaa !26
  %5368 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5363, <8 x double> %5367, <8 x double> %5366)
  %5369 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5363, <8 x double> %5368, <8 x double> %5365)
  %5370 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5363, <8 x double> %5369, <8 x double> %5364)
  %5371 = load ptr, ptr %5210, align 8, !tbaa !52
  %5372 = getelementptr inbounds nuw <8 x double>, ptr %5371, i64 %5359
  %5373 = load <8 x double>, ptr %5372, align 64, !tbaa !26
  %5374 = select <8 x i1> %5211, <8 x double> %5373, <8 x double> %5370
  store <8 x double> %5374, ptr %5372, align 64, !tbaa !26
  %5375 = load ptr, ptr %5212, align 64, !tbaa !62
  %5376 = getelementptr inbounds nuw <8 x double>, ptr %5375, i64 %5359
  %5377 = load <8 x double>, ptr %5376, align 64, !tbaa !26
  %5378 = select <8 x i1> %5211, <8 x double> %5377, <8 x double> %5370
  store <8 x double> %5378, ptr %5376, align 64, !tbaa !26
  %5379 = load ptr, ptr %5213, align 8, !tbaa !53
  %5380 = getelementptr inbounds nuw <8 x double>, ptr %5379, i64 %5359
  %5381 = load <8 x double>, ptr %5380, align 64, !tbaa !26
  %5382 = select <8 x i1> %5211, <8 x double> %5381, <8 x double> %4996
  store <8 x double> %5382, ptr %5380, align 64, !tbaa !26
  %5383 = load ptr, ptr %5214, align 16, !tbaa !64
  %5384 = getelementptr inbounds nuw <8 x double>, ptr %5383, i64 %5359
  %5385 = load <8 x double>, ptr %5384, align 64, !tbaa !26
  %5386 = select <8 x i1> %5211, <8 x double> %5385, <8 x double> %4996
  store <8 x double> %5386, ptr %5384, align 64, !tbaa !26
  %5387 = add nuw nsw i64 %5359, 1
  %5388 = icmp eq i64 %5387, %4991
  br i1 %5388, label %5287, label %5358, !llvm.loop !152

5389:                                             ; preds = %5287, %4931
  %5390 = phi <8 x double> [ %5357, %5287 ], [ %4933, %4931 ]
  %5391 = add nuw nsw i64 %4932, 1
  %5392 = load i64, ptr %179, align 8, !tbaa !20
  %5393 = icmp slt i64 %5391, %5392
  br i1 %5393, label %4931, label %5394, !llvm.loop !153

5394:                                             ; preds = %5389
  %5395 = load <8 x double>, ptr %159, align 64, !tbaa !26
  br label %5396

5396:                                             ; preds = %5394, %4889
  %5397 = phi <8 x double> [ %4898, %4889 ], [ %5395, %5394 ]
  %5398 = phi <8 x double> [ %4921, %4889 ], [ %5390, %5394 ]
  %5399 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %5400 = select <8 x i1> %4466, <8 x double> %5399, <8 x double> %5398
  store <8 x double> %5400, ptr %162, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %4406, ptr %13, align 64, !tbaa !26
  %5401 = load ptr, ptr %240, align 64, !tbaa !39
  %5402 = getelementptr inbounds nuw i8, ptr %5401, i64 64
  store <8 x double> %5397, ptr %5401, align 64, !tbaa !26
  %5403 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %5404 = getelementptr inbounds nuw i8, ptr %5401, i64 128
  store <8 x double> %5403, ptr %5402, align 64, !tbaa !26
  %5405 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %5406 = getelementptr inbounds nuw i8, ptr %5401, i64 192
  store <8 x double> %5405, ptr %5404, align 64, !tbaa !26
  %5407 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %5408 = getelementptr inbounds nuw i8, ptr %5401, i64 256
  store <8 x double> %5407, ptr %5406, align 64, !tbaa !26
  %5409 = load i64, ptr %179, align 8, !tbaa !20
  %5410 = icmp sgt i64 %5409, 0
  br i1 %5410, label %5415, label %5411

5411:                                             ; preds = %5415, %5396
  %5412 = phi ptr [ %5408, %5396 ], [ %5421, %5415 ]
  %5413 = load i64, ptr %150, align 8, !tbaa !46
  %5414 = icmp eq i64 %5413, 0
  br i1 %5414, label %5550, label %5425

5415:                                             ; preds = %5396, %5415
  %5416 = phi ptr [ %5421, %5415 ], [ %5408, %5396 ]
  %5417 = phi i64 [ %5422, %5415 ], [ 0, %5396 ]
  %5418 = load ptr, ptr %152, align 8, !tbaa !28
  %5419 = getelementptr inbounds nuw %struct.Piece, ptr %5418, i64 %5417, i32 34
  %5420 = load <8 x double>, ptr %5419, align 64, !tbaa !26
  %5421 = getelementptr inbounds nuw i8, ptr %5416, i64 64
  store <8 x double> %5420, ptr %5416, align 64, !tbaa !26
  %5422 = add nuw nsw i64 %5417, 1
  %5423 = load i64, ptr %179, align 8, !tbaa !20
  %5424 = icmp slt i64 %5422, %5423
  br i1 %5424, label %5415, label %5411, !llvm.loop !154

5425:                                             ; preds = %5411
  %5426 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %5427 = getelementptr inbounds nuw i8, ptr %5412, i64 64
  store <8 x double> %5426, ptr %5412, align 64, !tbaa !26
  %5428 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %5429 = getelementptr inbounds nuw i8, ptr %5412, i64 128
  store <8 x double> %5428, ptr %5427, align 64, !tbaa !26
  %5430 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %5431 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %5432 = fsub <8 x double> %5430, %5431
  %5433 = fcmp ogt <8 x double> %5432, zeroinitializer
  %5434 = select <8 x i1> %5433, <8 x double> %5432, <8 x double> zeroinitializer
  store <8 x double> %5434, ptr %5429, align 64, !tbaa !26
  %5435 = load i64, ptr %179, align 8, !tbaa !20
  %5436 = icmp sgt i64 %5435, 0
  br i1 %5436, label %5437, label %5550

5437:                                             ; preds = %5425
  %5438 = getelementptr inbounds nuw i8, ptr %5412, i64 192
  br label %5439

5439:                                             ; preds = %5437, %5439
  %5440 = phi ptr [ %5546, %5439 ], [ %5438, %5437 ]
  %5441 = phi i64 [ %5547, %5439 ], [ 0, %5437 ]
  %5442 = load ptr, ptr %152, align 8, !tbaa !28
  %5443 = getelementptr inbounds nuw %struct.Piece, ptr %5442, i64 %5441
  %5444 = getelementptr inbounds nuw i8, ptr %5443, i64 8592
  %5445 = load ptr, ptr %5444, align 16, !tbaa !49
  %5446 = load i64, ptr %141, align 16, !tbaa !21
  %5447 = getelementptr <8 x double>, ptr %5445, i64 %5446
  %5448 = getelementptr i8, ptr %5447, i64 -64
  %5449 = load <8 x double>, ptr %5448, align 64, !tbaa !26
  %5450 = getelementptr inbounds nuw i8, ptr %5443, i64 7232
  %5451 = load <8 x double>, ptr %5450, align 64, !tbaa !26
  %5452 = getelementptr inbounds nuw i8, ptr %5443, i64 5952
  %5453 = load <8 x double>, ptr %5452, align 64, !tbaa !26
  %5454 = fsub <8 x double> %5453, %5449
  %5455 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5451, <8 x double> %5454, <8 x double> %5449)
  %5456 = getelementptr inbounds nuw i8, ptr %5440, i64 64
  store <8 x double> %5455, ptr %5440, align 64, !tbaa !26
  %5457 = getelementptr inbounds nuw i8, ptr %5443, i64 6784
  %5458 = load <8 x double>, ptr %5457, align 64, !tbaa !26
  %5459 = getelementptr inbounds nuw i8, ptr %5440, i64 128
  store <8 x double> %5458, ptr %5456, align 64, !tbaa !26
  %5460 = load <8 x double>, ptr %5443, align 64, !tbaa !26
  %5461 = getelementptr inbounds nuw i8, ptr %5443, i64 3840
  %5462 = load <8 x double>, ptr %5461, align 64, !tbaa !26
  %5463 = fsub <8 x double> %5460, %5462
  %5464 = getelementptr inbounds nuw i8, ptr %5440, i64 192
  store <8 x double> %5463, ptr %5459, align 64, !tbaa !26
  %5465 = getelementptr inbounds nuw i8, ptr %5443, i64 4160
  %5466 = load <8 x double>, ptr %5465, align 64, !tbaa !26
  %5467 = getelementptr inbounds nuw i8, ptr %5440, i64 256
  store <8 x double> %5466, ptr %5464, align 64, !tbaa !26
  %5468 = getelementptr inbounds nuw i8, ptr %5443, i64 4096
  %5469 = load <8 x double>, ptr %5468, align 64, !tbaa !26
  %5470 = getelementptr inbounds nuw i8, ptr %5440, i64 320
  store <8 x double> %5469, ptr %5467, align 64, !tbaa !26
  %5471 = getelementptr inbounds nuw i8, ptr %5443, i64 3968
  %5472 = load <8 x double>, ptr %5471, align 64, !tbaa !26
  %5473 = getelementptr inbounds nuw i8, ptr %5440, i64 384
  store <8 x double> %5472, ptr %5470, align 64, !tbaa !26
  %5474 = getelementptr inbounds nuw i8, ptr %5443, i64 4224
  %5475 = load <8 x double>, ptr %5474, align 64, !tbaa !26
  %5476 = getelementptr inbounds nuw i8, ptr %5440, i64 448
  store <8 x double> %5475, ptr %5473, align 64, !tbaa !26
  %5477 = getelementptr inbounds nuw i8, ptr %5443, i64 8712
  %5478 = load i64, ptr %142, align 8, !tbaa !22
  %5479 = sitofp i64 %5478 to double
  %5480 = tail call double @llvm.fmuladd.f64(double %5479, double 7.500000e-01, double -5.000000e-01)
  %5481 = fcmp ogt double %5480, 0.000000e+00
  %5482 = select i1 %5481, double %5480, double 0.000000e+00
  %5483 = fptosi double %5482 to i64
  %5484 = add nsw i64 %5478, -2
  %5485 = tail call i64 @llvm.smin.i64(i64 %5484, i64 %5483)
  %5486 = sitofp i64 %5485 to double
  %5487 = fsub double %5480, %5486
  %5488 = fsub double 1.000000e+00, %5487
  %5489 = insertelement <8 x double> poison, double %5488, i64 0
  %5490 = shufflevector <8 x double> %5489, <8 x double> poison, <8 x i32> zeroinitializer
  %5491 = load ptr, ptr %5477, align 8, !tbaa !53
  %5492 = getelementptr inbounds <8 x double>, ptr %5491, i64 %5485
  %5493 = load <8 x double>, ptr %5492, align 64, !tbaa !26
  %5494 = insertelement <8 x double> poison, double %5487, i64 0
  %5495 = shufflevector <8 x double> %5494, <8 x double> poison, <8 x i32> zeroinitializer
  %5496 = getelementptr i8, ptr %5492, i64 64
  %5497 = load <8 x double>, ptr %5496, align 64, !tbaa !26
  %5498 = fmul <8 x double> %5497, %5495
  %5499 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5490, <8 x double> %5493, <8 x double> %5498)
  store <8 x double> %5499, ptr %5476, align 64, !tbaa !26
  %5500 = load i64, ptr %142, align 8, !tbaa !22
  %5501 = sitofp i64 %5500 to double
  %5502 = tail call double @llvm.fmuladd.f64(double %5501, double 5.000000e-01, double -5.000000e-01)
  %5503 = fcmp ogt double %5502, 0.000000e+00
  %5504 = select i1 %5503, double %5502, double 0.000000e+00
  %5505 = fptosi double %5504 to i64
  %5506 = add nsw i64 %5500, -2
  %5507 = tail call i64 @llvm.smin.i64(i64 %5506, i64 %5505)
  %5508 = sitofp i64 %5507 to double
  %5509 = fsub double %5502, %5508
  %5510 = fsub double 1.000000e+00, %5509
  %5511 = insertelement <8 x double> poison, double %5510, i64 0
  %5512 = shufflevector <8 x double> %5511, <8 x double> poison, <8 x i32> zeroinitializer
  %5513 = load ptr, ptr %5477, align 8, !tbaa !53
  %5514 = getelementptr inbounds <8 x double>, ptr %5513, i64 %5507
  %5515 = load <8 x double>, ptr %5514, align 64, !tbaa !26
  %5516 = insertelement <8 x double> poison, double %5509, i64 0
  %5517 = shufflevector <8 x double> %5516, <8 x double> poison, <8 x i32> zeroinitializer
  %5518 = getelementptr i8, ptr %5514, i64 64
  %5519 = load <8 x double>, ptr %5518, align 64, !tbaa !26
  %5520 = fmul <8 x double> %5519, %5517
  %5521 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5512, <8 x double> %5515, <8 x double> %5520)
  %5522 = getelementptr inbounds nuw i8, ptr %5440, i64 512
  store <8 x double> %5521, ptr %5522, align 64, !tbaa !26
  %5523 = load i64, ptr %142, align 8, !tbaa !22
  %5524 = sitofp i64 %5523 to double
  %5525 = tail call double @llvm.fmuladd.f64(double %5524, double 2.500000e-01, double -5.000000e-01)
  %5526 = fcmp ogt double %5525, 0.000000e+00
  %5527 = select i1 %5526, double %5525, double 0.000000e+00
  %5528 = fptosi double %5527 to i64
  %5529 = add nsw i64 %5523, -2
  %5530 = tail call i64 @llvm.smin.i64(i64 %5529, i64 %5528)
  %5531 = sitofp i64 %5530 to double
  %5532 = fsub double %5525, %5531
  %5533 = fsub double 1.000000e+00, %5532
  %5534 = insertelement <8 x double> poison, double %5533, i64 0
  %5535 = shufflevector <8 x double> %5534, <8 x double> poison, <8 x i32> zeroinitializer
  %5536 = load ptr, ptr %5477, align 8, !tbaa !53
  %5537 = getelementptr inbounds <8 x double>, ptr %5536, i64 %5530
  %5538 = load <8 x double>, ptr %5537, align 64, !tbaa !26
  %5539 = insertelement <8 x double> poison, double %5532, i64 0
  %5540 = shufflevector <8 x double> %5539, <8 x double> poison, <8 x i32> zeroinitializer
  %5541 = getelementptr i8, ptr %5537, i64 64
  %5542 = load <8 x double>, ptr %5541, align 64, !tbaa !26
  %5543 = fmul <8 x double> %5542, %5540
  %5544 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %5535, <8 x double> %5538, <8 x double> %5543)
  %5545 = getelementptr inbounds nuw i8, ptr %5440, i64 576
  store <8 x double> %5544, ptr %5545, align 64, !tbaa !26
  %5546 = getelementptr inbounds nuw i8, ptr %5440, i64 640
  %5547 = add nuw nsw i64 %5441, 1
  %5548 = load i64, ptr %179, align 8, !tbaa !20
  %5549 = icmp slt i64 %5547, %5548
  br i1 %5549, label %5439, label %5550, !llvm.loop !155

5550:                                             ; preds = %5439, %5425, %5411
  %5551 = getelementptr inbounds nuw i8, ptr %5412, i64 192
  br label %5552

5552:                                             ; preds = %5550, %5711
  %5553 = phi i64 [ 0, %5550 ], [ %5712, %5711 ]
  %5554 = getelementptr inbounds nuw i64, ptr %13, i64 %5553
  %5555 = load i64, ptr %5554, align 8, !tbaa !30
  %5556 = icmp eq i64 %5555, 0
  br i1 %5556, label %5711, label %5557

5557:                                             ; preds = %5552
  %5558 = getelementptr inbounds nuw [8 x i64], ptr %242, i64 0, i64 %5553
  %5559 = load i64, ptr %5558, align 8, !tbaa !30
  %5560 = load i64, ptr %243, align 8, !tbaa !156
  %5561 = icmp eq i64 %5559, %5560
  br i1 %5561, label %5565, label %5562

5562:                                             ; preds = %5557
  %5563 = getelementptr inbounds nuw [8 x ptr], ptr %247, i64 0, i64 %5553
  %5564 = load ptr, ptr %5563, align 8, !tbaa !157
  br label %5580

5565:                                             ; preds = %5557
  %5566 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %5553
  %5567 = load i64, ptr %5566, align 8, !tbaa !30
  %5568 = load ptr, ptr %244, align 8, !tbaa !158
  %5569 = load i64, ptr %134, align 8, !tbaa !43
  %5570 = getelementptr inbounds i64, ptr %5568, i64 %5569
  store i64 %5567, ptr %5570, align 8, !tbaa !30
  %5571 = load ptr, ptr %245, align 8, !tbaa !159
  %5572 = load i64, ptr %134, align 8, !tbaa !43
  %5573 = add nsw i64 %5572, 1
  store i64 %5573, ptr %134, align 8, !tbaa !43
  %5574 = load i64, ptr %243, align 8, !tbaa !156
  %5575 = mul nsw i64 %5574, %5572
  %5576 = load i64, ptr %246, align 8, !tbaa !15
  %5577 = mul nsw i64 %5575, %5576
  %5578 = getelementptr inbounds double, ptr %5571, i64 %5577
  %5579 = getelementptr inbounds nuw [8 x ptr], ptr %247, i64 0, i64 %5553
  store ptr %5578, ptr %5579, align 8, !tbaa !157
  br label %5580

5580:                                             ; preds = %5562, %5565
  %5581 = phi i64 [ %5559, %5562 ], [ 0, %5565 ]
  %5582 = phi ptr [ %5564, %5562 ], [ %5578, %5565 ]
  %5583 = add nsw i64 %5581, 1
  store i64 %5583, ptr %5558, align 8, !tbaa !30
  %5584 = load i64, ptr %246, align 8, !tbaa !15
  %5585 = mul nsw i64 %5584, %5581
  %5586 = getelementptr inbounds double, ptr %5582, i64 %5585
  %5587 = load ptr, ptr %240, align 64, !tbaa !39
  %5588 = icmp ult ptr %5587, %5408
  br i1 %5588, label %5654, label %5589

5589:                                             ; preds = %5654, %5580
  %5590 = phi ptr [ %5586, %5580 ], [ %5659, %5654 ]
  %5591 = load i64, ptr %151, align 64, !tbaa !16
  %5592 = icmp sgt i64 %5591, 0
  br i1 %5592, label %5593, label %5641

5593:                                             ; preds = %5589
  %5594 = trunc nuw nsw i64 %5553 to i32
  %5595 = and i64 %5591, 3
  %5596 = icmp ult i64 %5591, 4
  br i1 %5596, label %5625, label %5597

5597:                                             ; preds = %5593
  %5598 = and i64 %5591, 9223372036854775804
  br label %5599

5599:                                             ; preds = %5599, %5597
  %5600 = phi i64 [ 0, %5597 ], [ %5622, %5599 ]
  %5601 = phi ptr [ %5590, %5597 ], [ %5619, %5599 ]
  %5602 = phi i64 [ 0, %5597 ], [ %5623, %5599 ]
  %5603 = getelementptr inbounds nuw <8 x double>, ptr %5408, i64 %5600
  %5604 = getelementptr i8, ptr %5601, i64 8
  %5605 = load <8 x double>, ptr %5603, align 64, !tbaa !26
  %5606 = extractelement <8 x double> %5605, i32 %5594
  store double %5606, ptr %5601, align 8, !tbaa !44
  %5607 = or disjoint i64 %5600, 1
  %5608 = getelementptr inbounds nuw <8 x double>, ptr %5408, i64 %5607
  %5609 = getelementptr i8, ptr %5601, i64 16
  %5610 = load <8 x double>, ptr %5608, align 64, !tbaa !26
  %5611 = extractelement <8 x double> %5610, i32 %5594
  store double %5611, ptr %5604, align 8, !tbaa !44
  %5612 = or disjoint i64 %5600, 2
  %5613 = getelementptr inbounds nuw <8 x double>, ptr %5408, i64 %5612
  %5614 = getelementptr i8, ptr %5601, i64 24
  %5615 = load <8 x double>, ptr %5613, align 64, !tbaa !26
  %5616 = extractelement <8 x double> %5615, i32 %5594
  store double %5616, ptr %5609, align 8, !tbaa !44
  %5617 = or disjoint i64 %5600, 3
  %5618 = getelementptr inbounds nuw <8 x double>, ptr %5408, i64 %5617
  %5619 = getelementptr i8, ptr %5601, i64 32
  %5620 = load <8 x double>, ptr %5618, align 64, !tbaa !26
  %5621 = extractelement <8 x double> %5620, i32 %5594
  store double %5621, ptr %5614, align 8, !tbaa !44
  %5622 = add nuw nsw i64 %5600, 4
  %5623 = add i64 %5602, 4
  %5624 = icmp eq i64 %5623, %5598
  br i1 %5624, label %5625, label %5599, !llvm.loop !160

5625:                                             ; preds = %5599, %5593
  %5626 = phi ptr [ poison, %5593 ], [ %5619, %5599 ]
  %5627 = phi i64 [ 0, %5593 ], [ %5622, %5599 ]
  %5628 = phi ptr [ %5590, %5593 ], [ %5619, %5599 ]
  %5629 = icmp eq i64 %5595, 0
  br i1 %5629, label %5641, label %5630

5630:                                             ; preds = %5625, %5630
  %5631 = phi i64 [ %5638, %5630 ], [ %5627, %5625 ]
  %5632 = phi ptr [ %5635, %5630 ], [ %5628, %5625 ]
  %5633 = phi i64 [ %5639, %5630 ], [ 0, %5625 ]
  %5634 = getelementptr inbounds nuw <8 x double>, ptr %5408, i64 %5631
  %5635 = getelementptr i8, ptr %5632, i64 8
  %5636 = load <8 x double>, ptr %5634, align 64, !tbaa !26
  %5637 = extractelement <8 x double> %5636, i32 %5594
  store double %5637, ptr %5632, align 8, !tbaa !44
  %5638 = add nuw nsw i64 %5631, 1
  %5639 = add i64 %5633, 1
  %5640 = icmp eq i64 %5639, %5595
  br i1 %5640, label %5641, label %5630, !llvm.loop !161

5641:                                             ; preds = %5625, %5630, %5589
  %5642 = phi ptr [ %5590, %5589 ], [ %5626, %5625 ], [ %5635, %5630 ]
  %5643 = load i64, ptr %150, align 8, !tbaa !46
  %5644 = icmp eq i64 %5643, 0
  br i1 %5644, label %5711, label %5645

5645:                                             ; preds = %5641
  %5646 = getelementptr inbounds nuw double, ptr %5412, i64 %5553
  %5647 = load double, ptr %5646, align 8, !tbaa !44
  %5648 = getelementptr inbounds nuw i8, ptr %5642, i64 8
  store double %5647, ptr %5642, align 8, !tbaa !44
  %5649 = getelementptr inbounds nuw i8, ptr %5646, i64 64
  %5650 = load double, ptr %5649, align 8, !tbaa !44
  %5651 = getelementptr inbounds nuw i8, ptr %5642, i64 16
  store double %5650, ptr %5648, align 8, !tbaa !44
  %5652 = getelementptr inbounds nuw i8, ptr %5646, i64 128
  %5653 = load double, ptr %5652, align 8, !tbaa !44
  store double %5653, ptr %5651, align 8, !tbaa !44
  br i1 %5592, label %5662, label %5711

5654:                                             ; preds = %5580, %5654
  %5655 = phi ptr [ %5660, %5654 ], [ %5587, %5580 ]
  %5656 = phi ptr [ %5659, %5654 ], [ %5586, %5580 ]
  %5657 = getelementptr inbounds nuw double, ptr %5655, i64 %5553
  %5658 = load double, ptr %5657, align 8, !tbaa !44
  %5659 = getelementptr inbounds nuw i8, ptr %5656, i64 8
  store double %5658, ptr %5656, align 8, !tbaa !44
  %5660 = getelementptr inbounds nuw i8, ptr %5655, i64 64
  %5661 = icmp ult ptr %5660, %5408
  br i1 %5661, label %5654, label %5589, !llvm.loop !163

5662:                                             ; preds = %5645
  %5663 = getelementptr inbounds nuw i8, ptr %5642, i64 24
  %5664 = trunc nuw nsw i64 %5553 to i32
  br label %5665

5665:                                             ; preds = %5662, %5665
  %5666 = phi i64 [ %5709, %5665 ], [ 0, %5662 ]
  %5667 = phi ptr [ %5708, %5665 ], [ %5663, %5662 ]
  %5668 = mul nuw nsw i64 %5666, 640
  %5669 = getelementptr inbounds nuw i8, ptr %5551, i64 %5668
  %5670 = load <8 x double>, ptr %5669, align 64, !tbaa !26
  %5671 = extractelement <8 x double> %5670, i32 %5664
  %5672 = getelementptr inbounds nuw i8, ptr %5667, i64 8
  store double %5671, ptr %5667, align 8, !tbaa !44
  %5673 = getelementptr inbounds nuw i8, ptr %5669, i64 64
  %5674 = load <8 x double>, ptr %5673, align 64, !tbaa !26
  %5675 = extractelement <8 x double> %5674, i32 %5664
  %5676 = getelementptr inbounds nuw i8, ptr %5667, i64 16
  store double %5675, ptr %5672, align 8, !tbaa !44
  %5677 = getelementptr inbounds nuw i8, ptr %5669, i64 128
  %5678 = load <8 x double>, ptr %5677, align 64, !tbaa !26
  %5679 = extractelement <8 x double> %5678, i32 %5664
  %5680 = getelementptr inbounds nuw i8, ptr %5667, i64 24
  store double %5679, ptr %5676, align 8, !tbaa !44
  %5681 = getelementptr inbounds nuw i8, ptr %5669, i64 192
  %5682 = load <8 x double>, ptr %5681, align 64, !tbaa !26
  %5683 = extractelement <8 x double> %5682, i32 %5664
  %5684 = getelementptr inbounds nuw i8, ptr %5667, i64 32
  store double %5683, ptr %5680, align 8, !tbaa !44
  %5685 = getelementptr inbounds nuw i8, ptr %5669, i64 256
  %5686 = load <8 x double>, ptr %5685, align 64, !tbaa !26
  %5687 = extractelement <8 x double> %5686, i32 %5664
  %5688 = getelementptr inbounds nuw i8, ptr %5667, i64 40
  store double %5687, ptr %5684, align 8, !tbaa !44
  %5689 = getelementptr inbounds nuw i8, ptr %5669, i64 320
  %5690 = load <8 x double>, ptr %5689, align 64, !tbaa !26
  %5691 = extractelement <8 x double> %5690, i32 %5664
  %5692 = getelementptr inbounds nuw i8, ptr %5667, i64 48
  store double %5691, ptr %5688, align 8, !tbaa !44
  %5693 = getelementptr inbounds nuw i8, ptr %5669, i64 384
  %5694 = load <8 x double>, ptr %5693, align 64, !tbaa !26
  %5695 = extractelement <8 x double> %5694, i32 %5664
  %5696 = getelementptr inbounds nuw i8, ptr %5667, i64 56
  store double %5695, ptr %5692, align 8, !tbaa !44
  %5697 = getelementptr inbounds nuw i8, ptr %5669, i64 448
  %5698 = load <8 x double>, ptr %5697, align 64, !tbaa !26
  %5699 = extractelement <8 x double> %5698, i32 %5664
  %5700 = getelementptr inbounds nuw i8, ptr %5667, i64 64
  store double %5699, ptr %5696, align 8, !tbaa !44
  %5701 = getelementptr inbounds nuw i8, ptr %5669, i64 512
  %5702 = load <8 x double>, ptr %5701, align 64, !tbaa !26
  %5703 = extractelement <8 x double> %5702, i32 %5664
  %5704 = getelementptr inbounds nuw i8, ptr %5667, i64 72
  store double %5703, ptr %5700, align 8, !tbaa !44
  %5705 = getelementptr inbounds nuw i8, ptr %5669, i64 576
  %5706 = load <8 x double>, ptr %5705, align 64, !tbaa !26
  %5707 = extractelement <8 x double> %5706, i32 %5664
  %5708 = getelementptr inbounds nuw i8, ptr %5667, i64 80
  store double %5707, ptr %5704, align 8, !tbaa !44
  %5709 = add nuw nsw i64 %5666, 1
  %5710 = icmp eq i64 %5709, %5591
  br i1 %5710, label %5711, label %5665, !llvm.loop !160

5711:                                             ; preds = %5665, %5645, %5641, %5552
  %5712 = add nuw nsw i64 %5553, 1
  %5713 = icmp eq i64 %5712, 8
  br i1 %5713, label %5714, label %5552, !llvm.loop !164

5714:                                             ; preds = %5711
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %5715 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %5716 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %5717 = fsub <8 x double> %5715, %5716
  %5718 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %5719 = fadd <8 x double> %5718, splat (double -1.000000e-09)
  %5720 = fcmp oge <8 x double> %5717, %5719
  %5721 = select <8 x i1> %5720, <8 x i64> %4406, <8 x i64> zeroinitializer
  %5722 = load i64, ptr %179, align 8, !tbaa !20
  %5723 = icmp sgt i64 %5722, 0
  br i1 %5723, label %5724, label %5756

5724:                                             ; preds = %5714
  %5725 = load ptr, ptr %152, align 8, !tbaa !28
  %5726 = and i64 %5722, 1
  %5727 = icmp eq i64 %5722, 1
  br i1 %5727, label %5746, label %5728

5728:                                             ; preds = %5724
  %5729 = and i64 %5722, 9223372036854775806
  br label %5730

5730:                                             ; preds = %5730, %5728
  %5731 = phi i64 [ 0, %5728 ], [ %5743, %5730 ]
  %5732 = phi <8 x double> [ splat (double 1.000000e+09), %5728 ], [ %5742, %5730 ]
  %5733 = phi i64 [ 0, %5728 ], [ %5744, %5730 ]
  %5734 = getelementptr inbounds nuw %struct.Piece, ptr %5725, i64 %5731, i32 34
  %5735 = load <8 x double>, ptr %5734, align 64, !tbaa !26
  %5736 = fcmp olt <8 x double> %5732, %5735
  %5737 = select <8 x i1> %5736, <8 x double> %5732, <8 x double> %5735
  %5738 = or disjoint i64 %5731, 1
  %5739 = getelementptr inbounds nuw %struct.Piece, ptr %5725, i64 %5738, i32 34
  %5740 = load <8 x double>, ptr %5739, align 64, !tbaa !26
  %5741 = fcmp olt <8 x double> %5737, %5740
  %5742 = select <8 x i1> %5741, <8 x double> %5737, <8 x double> %5740
  %5743 = add nuw nsw i64 %5731, 2
  %5744 = add i64 %5733, 2
  %5745 = icmp eq i64 %5744, %5729
  br i1 %5745, label %5746, label %5730, !llvm.loop !140

5746:                                             ; preds = %5730, %5724
  %5747 = phi <8 x double> [ poison, %5724 ], [ %5742, %5730 ]
  %5748 = phi i64 [ 0, %5724 ], [ %5743, %5730 ]
  %5749 = phi <8 x double> [ splat (double 1.000000e+09), %5724 ], [ %5742, %5730 ]
  %5750 = icmp eq i64 %5726, 0
  br i1 %5750, label %5756, label %5751

5751:                                             ; preds = %5746
  %5752 = getelementptr inbounds nuw %struct.Piece, ptr %5725, i64 %5748, i32 34
  %5753 = load <8 x double>, ptr %5752, align 64, !tbaa !26
  %5754 = fcmp olt <8 x double> %5749, %5753
  %5755 = select <8 x i1> %5754, <8 x double> %5749, <8 x double> %5753
  br label %5756

5756:                                             ; preds = %5751, %5746, %5714
  %5757 = phi <8 x double> [ splat (double 1.000000e+09), %5714 ], [ %5747, %5746 ], [ %5755, %5751 ]
  %5758 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %5759 = select <8 x i1> %4466, <8 x double> %5758, <8 x double> %5757
  store <8 x double> %5759, ptr %236, align 64, !tbaa !26
  %5760 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %5761 = fcmp une <8 x double> %5760, zeroinitializer
  %5762 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %5763 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %5764 = fsub <8 x double> %5762, %5763
  %5765 = fcmp une <8 x double> %5760, splat (double 1.000000e+00)
  %5766 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %5767 = load <8 x double>, ptr %238, align 64, !tbaa !26
  %5768 = fsub <8 x double> %5766, %5767
  %5769 = select <8 x i1> %5765, <8 x double> splat (double -1.000000e+00), <8 x double> %5768
  %5770 = fcmp une <8 x double> %5760, splat (double 2.000000e+00)
  %5771 = fsub <8 x double> %5759, %5767
  %5772 = select <8 x i1> %5770, <8 x double> %5769, <8 x double> %5771
  %5773 = fcmp une <8 x double> %5760, splat (double 3.000000e+00)
  %5774 = fsub <8 x double> %5764, %5767
  %5775 = select <8 x i1> %5773, <8 x double> %5772, <8 x double> %5774
  %5776 = fcmp une <8 x double> %5760, splat (double 4.000000e+00)
  %5777 = fsub <8 x double> %5767, %5764
  %5778 = select <8 x i1> %5776, <8 x double> %5775, <8 x double> %5777
  %5779 = fcmp oge <8 x double> %5778, splat (double 0xBEB0C6F7A0B5ED8D)
  %5780 = select <8 x i1> %5779, <8 x i1> %5761, <8 x i1> zeroinitializer
  %5781 = select <8 x i1> %5780, <8 x i64> %4406, <8 x i64> zeroinitializer
  %5782 = xor <8 x i64> %5781, splat (i64 -1)
  %5783 = and <8 x i64> %5721, %5782
  %5784 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %5785 = icmp ne <8 x i64> %5783, zeroinitializer
  %5786 = select <8 x i1> %5761, <8 x i1> %5785, <8 x i1> zeroinitializer
  %5787 = select <8 x i1> %5786, <8 x double> splat (double 2.000000e+00), <8 x double> %5784
  store <8 x double> %5787, ptr %148, align 64, !tbaa !26
  %5788 = or <8 x i64> %5781, %5721
  %5789 = load <8 x double>, ptr %241, align 64, !tbaa !26
  %5790 = fadd <8 x double> %5789, splat (double 1.000000e+00)
  %5791 = icmp eq <8 x i64> %5788, zeroinitializer
  %5792 = select <8 x i1> %5791, <8 x double> %5789, <8 x double> %5790
  store <8 x double> %5792, ptr %241, align 64, !tbaa !26
  %5793 = xor <8 x i64> %5788, %4406
  %5794 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %5795 = fcmp oeq <8 x double> %5794, zeroinitializer
  %5796 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %5797 = fcmp oeq <8 x double> %5796, zeroinitializer
  %5798 = select <8 x i1> %5797, <8 x i1> %5795, <8 x i1> zeroinitializer
  %5799 = select <8 x i1> %5798, <8 x i64> %5793, <8 x i64> zeroinitializer
  %5800 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %5801 = fmul <8 x double> %5800, splat (double 5.000000e-01)
  %5802 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %5803 = fadd <8 x double> %5802, %5801
  %5804 = fadd <8 x double> %5803, splat (double -4.000000e-03)
  %5805 = fcmp ult <8 x double> %5766, %5804
  %5806 = fsub <8 x double> %5802, %5801
  %5807 = fadd <8 x double> %5806, splat (double 4.000000e-03)
  %5808 = fcmp ole <8 x double> %5766, %5807
  %5809 = load <8 x i64>, ptr %166, align 64, !tbaa !26
  %5810 = select <8 x i1> %5808, <8 x i64> splat (i64 -1), <8 x i64> %5809
  %5811 = select <8 x i1> %5805, <8 x i64> %5810, <8 x i64> zeroinitializer
  %5812 = xor <8 x i64> %5811, %5809
  %5813 = and <8 x i64> %5812, %5799
  %5814 = and <8 x i64> %5811, %5799
  %5815 = xor <8 x i64> %5799, splat (i64 -1)
  %5816 = and <8 x i64> %5809, %5815
  %5817 = or <8 x i64> %5814, %5816
  store <8 x i64> %5817, ptr %166, align 64, !tbaa !26
  %5818 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %5819 = or <8 x i64> %5813, %5818
  store <8 x i64> %5819, ptr %176, align 64, !tbaa !26
  %5820 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5788)
  %5821 = icmp eq i64 %5820, 0
  br i1 %5821, label %5856, label %5822

5822:                                             ; preds = %5756
  %5823 = extractelement <8 x i64> %5788, i64 0
  %5824 = icmp eq i64 %5823, 0
  br i1 %5824, label %5826, label %5825

5825:                                             ; preds = %5822
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #6
  br label %5826

5826:                                             ; preds = %5825, %5822
  %5827 = extractelement <8 x i64> %5788, i64 1
  %5828 = icmp eq i64 %5827, 0
  br i1 %5828, label %5830, label %5829

5829:                                             ; preds = %5826
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #6
  br label %5830

5830:                                             ; preds = %5829, %5826
  %5831 = extractelement <8 x i64> %5788, i64 2
  %5832 = icmp eq i64 %5831, 0
  br i1 %5832, label %5834, label %5833

5833:                                             ; preds = %5830
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 2) #6
  br label %5834

5834:                                             ; preds = %5833, %5830
  %5835 = extractelement <8 x i64> %5788, i64 3
  %5836 = icmp eq i64 %5835, 0
  br i1 %5836, label %5838, label %5837

5837:                                             ; preds = %5834
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 3) #6
  br label %5838

5838:                                             ; preds = %5837, %5834
  %5839 = extractelement <8 x i64> %5788, i64 4
  %5840 = icmp eq i64 %5839, 0
  br i1 %5840, label %5842, label %5841

5841:                                             ; preds = %5838
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 4) #6
  br label %5842

5842:                                             ; preds = %5841, %5838
  %5843 = extractelement <8 x i64> %5788, i64 5
  %5844 = icmp eq i64 %5843, 0
  br i1 %5844, label %5846, label %5845

5845:                                             ; preds = %5842
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 5) #6
  br label %5846

5846:                                             ; preds = %5845, %5842
  %5847 = extractelement <8 x i64> %5788, i64 6
  %5848 = icmp eq i64 %5847, 0
  br i1 %5848, label %5850, label %5849

5849:                                             ; preds = %5846
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 6) #6
  br label %5850

5850:                                             ; preds = %5849, %5846
  %5851 = extractelement <8 x i64> %5788, i64 7
  %5852 = icmp eq i64 %5851, 0
  br i1 %5852, label %5854, label %5853

5853:                                             ; preds = %5850
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 7) #6
  br label %5854

5854:                                             ; preds = %5853, %5850
  %5855 = load <8 x double>, ptr %148, align 64, !tbaa !26
  br label %5856

5856:                                             ; preds = %5854, %5756
  %5857 = phi <8 x double> [ %5855, %5854 ], [ %5787, %5756 ]
  %5858 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %5859 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %5860 = fadd <8 x double> %5859, splat (double -1.000000e+00)
  %5861 = fcmp oge <8 x double> %5858, %5860
  %5862 = select <8 x i1> %5861, <8 x i64> %4406, <8 x i64> zeroinitializer
  %5863 = icmp eq <8 x i64> %5862, zeroinitializer
  %5864 = select <8 x i1> %5863, <8 x double> %5857, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5864, ptr %148, align 64, !tbaa !26
  %5865 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5862)
  %5866 = icmp eq i64 %5865, 0
  br i1 %5866, label %553, label %5867

5867:                                             ; preds = %5856
  %5868 = extractelement <8 x i64> %5862, i64 0
  %5869 = icmp eq i64 %5868, 0
  br i1 %5869, label %5871, label %5870

5870:                                             ; preds = %5867
  store double 1.000000e+00, ptr %140, align 8, !tbaa !44
  br label %5871

5871:                                             ; preds = %5870, %5867
  %5872 = extractelement <8 x i64> %5862, i64 1
  %5873 = icmp eq i64 %5872, 0
  br i1 %5873, label %5875, label %5874

5874:                                             ; preds = %5871
  store double 1.000000e+00, ptr %278, align 8, !tbaa !44
  br label %5875

5875:                                             ; preds = %5874, %5871
  %5876 = extractelement <8 x i64> %5862, i64 2
  %5877 = icmp eq i64 %5876, 0
  br i1 %5877, label %5879, label %5878

5878:                                             ; preds = %5875
  store double 1.000000e+00, ptr %279, align 8, !tbaa !44
  br label %5879

5879:                                             ; preds = %5878, %5875
  %5880 = extractelement <8 x i64> %5862, i64 3
  %5881 = icmp eq i64 %5880, 0
  br i1 %5881, label %5883, label %5882

5882:                                             ; preds = %5879
  store double 1.000000e+00, ptr %280, align 8, !tbaa !44
  br label %5883

5883:                                             ; preds = %5882, %5879
  %5884 = extractelement <8 x i64> %5862, i64 4
  %5885 = icmp eq i64 %5884, 0
  br i1 %5885, label %5887, label %5886

5886:                                             ; preds = %5883
  store double 1.000000e+00, ptr %281, align 8, !tbaa !44
  br label %5887

5887:                                             ; preds = %5886, %5883
  %5888 = extractelement <8 x i64> %5862, i64 5
  %5889 = icmp eq i64 %5888, 0
  br i1 %5889, label %5891, label %5890

5890:                                             ; preds = %5887
  store double 1.000000e+00, ptr %282, align 8, !tbaa !44
  br label %5891

5891:                                             ; preds = %5890, %5887
  %5892 = extractelement <8 x i64> %5862, i64 6
  %5893 = icmp eq i64 %5892, 0
  br i1 %5893, label %5895, label %5894

5894:                                             ; preds = %5891
  store double 1.000000e+00, ptr %283, align 8, !tbaa !44
  br label %5895

5895:                                             ; preds = %5894, %5891
  %5896 = extractelement <8 x i64> %5862, i64 7
  %5897 = icmp eq i64 %5896, 0
  br i1 %5897, label %553, label %5898

5898:                                             ; preds = %5895
  store double 1.000000e+00, ptr %284, align 8, !tbaa !44
  br label %553

5899:                                             ; preds = %553, %558, %131
  %5900 = phi i64 [ 0, %131 ], [ 1, %558 ], [ 0, %553 ]
  ret i64 %5900
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 2408
  %7 = sext i32 %2 to i64
  %8 = load ptr, ptr %5, align 8, !tbaa !165
  %9 = load i64, ptr %6, align 8, !tbaa !27
  %10 = getelementptr inbounds i64, ptr %8, i64 %9
  %11 = load i64, ptr %10, align 8, !tbaa !30
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2, i64 noundef %11) #6
  %12 = getelementptr inbounds i64, ptr %4, i64 %7
  store i64 -1, ptr %12, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2) #6
  %13 = load i64, ptr %6, align 8, !tbaa !27
  %14 = add nsw i64 %13, 1
  store i64 %14, ptr %6, align 8, !tbaa !27
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 6208
  %16 = load ptr, ptr %15, align 64, !tbaa !39
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 3840
  %18 = load <8 x double>, ptr %17, align 64, !tbaa !26
  %19 = getelementptr inbounds nuw i8, ptr %16, i64 64
  store <8 x double> %18, ptr %16, align 64, !tbaa !26
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %21 = load <8 x double>, ptr %20, align 64, !tbaa !26
  %22 = getelementptr inbounds nuw i8, ptr %16, i64 128
  store <8 x double> %21, ptr %19, align 64, !tbaa !26
  %23 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %24 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %25 = load <8 x double>, ptr %24, align 64, !tbaa !26
  %26 = getelementptr inbounds nuw i8, ptr %16, i64 192
  store <8 x double> %25, ptr %22, align 64, !tbaa !26
  %27 = load <8 x double>, ptr %23, align 64, !tbaa !26
  %28 = getelementptr inbounds nuw i8, ptr %16, i64 256
  store <8 x double> %27, ptr %26, align 64, !tbaa !26
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 2376
  %30 = load i64, ptr %29, align 8, !tbaa !20
  %31 = icmp sgt i64 %30, 0
  br i1 %31, label %32, label %34

32:                                               ; preds = %3
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  br label %39

34:                                               ; preds = %39, %3
  %35 = phi ptr [ %28, %3 ], [ %45, %39 ]
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %37 = load i64, ptr %36, align 8, !tbaa !46
  %38 = icmp eq i64 %37, 0
  br i1 %38, label %180, label %49

39:                                               ; preds = %32, %39
  %40 = phi ptr [ %28, %32 ], [ %45, %39 ]
  %41 = phi i64 [ 0, %32 ], [ %46, %39 ]
  %42 = load ptr, ptr %33, align 8, !tbaa !28
  %43 = getelementptr inbounds nuw %struct.Piece, ptr %42, i64 %41, i32 34
  %44 = load <8 x double>, ptr %43, align 64, !tbaa !26
  %45 = getelementptr inbounds nuw i8, ptr %40, i64 64
  store <8 x double> %44, ptr %40, align 64, !tbaa !26
  %46 = add nuw nsw i64 %41, 1
  %47 = load i64, ptr %29, align 8, !tbaa !20
  %48 = icmp slt i64 %46, %47
  br i1 %48, label %39, label %34, !llvm.loop !154

49:                                               ; preds = %34
  %50 = getelementptr inbounds nuw i8, ptr %0, i64 3136
  %51 = load <8 x double>, ptr %50, align 64, !tbaa !26
  %52 = getelementptr inbounds nuw i8, ptr %35, i64 64
  store <8 x double> %51, ptr %35, align 64, !tbaa !26
  %53 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %54 = load <8 x double>, ptr %53, align 64, !tbaa !26
  %55 = getelementptr inbounds nuw i8, ptr %35, i64 128
  store <8 x double> %54, ptr %52, align 64, !tbaa !26
  %56 = load <8 x double>, ptr %24, align 64, !tbaa !26
  %57 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %58 = load <8 x double>, ptr %57, align 64, !tbaa !26
  %59 = fsub <8 x double> %56, %58
  %60 = fcmp ogt <8 x double> %59, zeroinitializer
  %61 = select <8 x i1> %60, <8 x double> %59, <8 x double> zeroinitializer
  store <8 x double> %61, ptr %55, align 64, !tbaa !26
  %62 = load i64, ptr %29, align 8, !tbaa !20
  %63 = icmp sgt i64 %62, 0
  br i1 %63, label %64, label %180

64:                                               ; preds = %49
  %65 = getelementptr inbounds nuw i8, ptr %35, i64 192
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 6216
  %67 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  br label %69

69:                                               ; preds = %64, %69
  %70 = phi ptr [ %65, %64 ], [ %176, %69 ]
  %71 = phi i64 [ 0, %64 ], [ %177, %69 ]
  %72 = load ptr, ptr %66, align 8, !tbaa !28
  %73 = getelementptr inbounds nuw %struct.Piece, ptr %72, i64 %71
  %74 = getelementptr inbounds nuw i8, ptr %73, i64 8592
  %75 = load ptr, ptr %74, align 16, !tbaa !49
  %76 = load i64, ptr %67, align 16, !tbaa !21
  %77 = getelementptr <8 x double>, ptr %75, i64 %76
  %78 = getelementptr i8, ptr %77, i64 -64
  %79 = load <8 x double>, ptr %78, align 64, !tbaa !26
  %80 = getelementptr inbounds nuw i8, ptr %73, i64 7232
  %81 = load <8 x double>, ptr %80, align 64, !tbaa !26
  %82 = getelementptr inbounds nuw i8, ptr %73, i64 5952
  %83 = load <8 x double>, ptr %82, align 64, !tbaa !26
  %84 = fsub <8 x double> %83, %79
  %85 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %81, <8 x double> %84, <8 x double> %79)
  %86 = getelementptr inbounds nuw i8, ptr %70, i64 64
  store <8 x double> %85, ptr %70, align 64, !tbaa !26
  %87 = getelementptr inbounds nuw i8, ptr %73, i64 6784
  %88 = load <8 x double>, ptr %87, align 64, !tbaa !26
  %89 = getelementptr inbounds nuw i8, ptr %70, i64 128
  store <8 x double> %88, ptr %86, align 64, !tbaa !26
  %90 = load <8 x double>, ptr %73, align 64, !tbaa !26
  %91 = getelementptr inbounds nuw i8, ptr %73, i64 3840
  %92 = load <8 x double>, ptr %91, align 64, !tbaa !26
  %93 = fsub <8 x double> %90, %92
  %94 = getelementptr inbounds nuw i8, ptr %70, i64 192
  store <8 x double> %93, ptr %89, align 64, !tbaa !26
  %95 = getelementptr inbounds nuw i8, ptr %73, i64 4160
  %96 = load <8 x double>, ptr %95, align 64, !tbaa !26
  %97 = getelementptr inbounds nuw i8, ptr %70, i64 256
  store <8 x double> %96, ptr %94, align 64, !tbaa !26
  %98 = getelementptr inbounds nuw i8, ptr %73, i64 4096
  %99 = load <8 x double>, ptr %98, align 64, !tbaa !26
  %100 = getelementptr inbounds nuw i8, ptr %70, i64 320
  store <8 x double> %99, ptr %97, align 64, !tbaa !26
  %101 = getelementptr inbounds nuw i8, ptr %73, i64 3968
  %102 = load <8 x double>, ptr %101, align 64, !tbaa !26
  %103 = getelementptr inbounds nuw i8, ptr %70, i64 384
  store <8 x double> %102, ptr %100, align 64, !tbaa !26
  %104 = getelementptr inbounds nuw i8, ptr %73, i64 4224
  %105 = load <8 x double>, ptr %104, align 64, !tbaa !26
  %106 = getelementptr inbounds nuw i8, ptr %70, i64 448
  store <8 x double> %105, ptr %103, align 64, !tbaa !26
  %107 = getelementptr inbounds nuw i8, ptr %73, i64 8712
  %108 = load i64, ptr %68, align 8, !tbaa !22
  %109 = sitofp i64 %108 to double
  %110 = tail call double @llvm.fmuladd.f64(double %109, double 7.500000e-01, double -5.000000e-01)
  %111 = fcmp ogt double %110, 0.000000e+00
  %112 = select i1 %111, double %110, double 0.000000e+00
  %113 = fptosi double %112 to i64
  %114 = add nsw i64 %108, -2
  %115 = tail call i64 @llvm.smin.i64(i64 %114, i64 %113)
  %116 = sitofp i64 %115 to double
  %117 = fsub double %110, %116
  %118 = fsub double 1.000000e+00, %117
  %119 = insertelement <8 x double> poison, double %118, i64 0
  %120 = shufflevector <8 x double> %119, <8 x double> poison, <8 x i32> zeroinitializer
  %121 = load ptr, ptr %107, align 8, !tbaa !53
  %122 = getelementptr inbounds <8 x double>, ptr %121, i64 %115
  %123 = load <8 x double>, ptr %122, align 64, !tbaa !26
  %124 = insertelement <8 x double> poison, double %117, i64 0
  %125 = shufflevector <8 x double> %124, <8 x double> poison, <8 x i32> zeroinitializer
  %126 = getelementptr i8, ptr %122, i64 64
  %127 = load <8 x double>, ptr %126, align 64, !tbaa !26
  %128 = fmul <8 x double> %127, %125
  %129 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %120, <8 x double> %123, <8 x double> %128)
  store <8 x double> %129, ptr %106, align 64, !tbaa !26
  %130 = load i64, ptr %68, align 8, !tbaa !22
  %131 = sitofp i64 %130 to double
  %132 = tail call double @llvm.fmuladd.f64(double %131, double 5.000000e-01, double -5.000000e-01)
  %133 = fcmp ogt double %132, 0.000000e+00
  %134 = select i1 %133, double %132, double 0.000000e+00
  %135 = fptosi double %134 to i64
  %136 = add nsw i64 %130, -2
  %137 = tail call i64 @llvm.smin.i64(i64 %136, i64 %135)
  %138 = sitofp i64 %137 to double
  %139 = fsub double %132, %138
  %140 = fsub double 1.000000e+00, %139
  %141 = insertelement <8 x double> poison, double %140, i64 0
  %142 = shufflevector <8 x double> %141, <8 x double> poison, <8 x i32> zeroinitializer
  %143 = load ptr, ptr %107, align 8, !tbaa !53
  %144 = getelementptr inbounds <8 x double>, ptr %143, i64 %137
  %145 = load <8 x double>, ptr %144, align 64, !tbaa !26
  %146 = insertelement <8 x double> poison, double %139, i64 0
  %147 = shufflevector <8 x double> %146, <8 x double> poison, <8 x i32> zeroinitializer
  %148 = getelementptr i8, ptr %144, i64 64
  %149 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %150 = fmul <8 x double> %149, %147
  %151 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %142, <8 x double> %145, <8 x double> %150)
  %152 = getelementptr inbounds nuw i8, ptr %70, i64 512
  store <8 x double> %151, ptr %152, align 64, !tbaa !26
  %153 = load i64, ptr %68, align 8, !tbaa !22
  %154 = sitofp i64 %153 to double
  %155 = tail call double @llvm.fmuladd.f64(double %154, double 2.500000e-01, double -5.000000e-01)
  %156 = fcmp ogt double %155, 0.000000e+00
  %157 = select i1 %156, double %155, double 0.000000e+00
  %158 = fptosi double %157 to i64
  %159 = add nsw i64 %153, -2
  %160 = tail call i64 @llvm.smin.i64(i64 %159, i64 %158)
  %161 = sitofp i64 %160 to double
  %162 = fsub double %155, %161
  %163 = fsub double 1.000000e+00, %162
  %164 = insertelement <8 x double> poison, double %163, i64 0
  %165 = shufflevector <8 x double> %164, <8 x double> poison, <8 x i32> zeroinitializer
  %166 = load ptr, ptr %107, align 8, !tbaa !53
  %167 = getelementptr inbounds <8 x double>, ptr %166, i64 %160
  %168 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %169 = insertelement <8 x double> poison, double %162, i64 0
  %170 = shufflevector <8 x double> %169, <8 x double> poison, <8 x i32> zeroinitializer
  %171 = getelementptr i8, ptr %167, i64 64
  %172 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %173 = fmul <8 x double> %172, %170
  %174 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %165, <8 x double> %168, <8 x double> %173)
  %175 = getelementptr inbounds nuw i8, ptr %70, i64 576
  store <8 x double> %174, ptr %175, align 64, !tbaa !26
  %176 = getelementptr inbounds nuw i8, ptr %70, i64 640
  %177 = add nuw nsw i64 %71, 1
  %178 = load i64, ptr %29, align 8, !tbaa !20
  %179 = icmp slt i64 %177, %178
  br i1 %179, label %69, label %180, !llvm.loop !155

180:                                              ; preds = %69, %49, %34
  %181 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %183 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %185 = load ptr, ptr %184, align 8
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %189 = getelementptr inbounds nuw i8, ptr %0, i64 6080
  %190 = load ptr, ptr %15, align 64
  %191 = icmp ult ptr %190, %28
  %192 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %193 = getelementptr inbounds nuw i8, ptr %35, i64 192
  br label %194

194:                                              ; preds = %180, %350
  %195 = phi i64 [ 0, %180 ], [ %351, %350 ]
  %196 = getelementptr inbounds nuw i64, ptr %4, i64 %195
  %197 = load i64, ptr %196, align 8, !tbaa !30
  %198 = icmp eq i64 %197, 0
  br i1 %198, label %350, label %199

199:                                              ; preds = %194
  %200 = getelementptr inbounds nuw [8 x i64], ptr %181, i64 0, i64 %195
  %201 = load i64, ptr %200, align 8, !tbaa !30
  %202 = load i64, ptr %182, align 8, !tbaa !156
  %203 = icmp eq i64 %201, %202
  br i1 %203, label %207, label %204

204:                                              ; preds = %199
  %205 = getelementptr inbounds nuw [8 x ptr], ptr %189, i64 0, i64 %195
  %206 = load ptr, ptr %205, align 8, !tbaa !157
  br label %221

207:                                              ; preds = %199
  %208 = getelementptr inbounds nuw [8 x i64], ptr %183, i64 0, i64 %195
  %209 = load i64, ptr %208, align 8, !tbaa !30
  %210 = load i64, ptr %186, align 8, !tbaa !43
  %211 = getelementptr inbounds i64, ptr %185, i64 %210
  store i64 %209, ptr %211, align 8, !tbaa !30
  %212 = load ptr, ptr %187, align 8, !tbaa !159
  %213 = load i64, ptr %186, align 8, !tbaa !43
  %214 = add nsw i64 %213, 1
  store i64 %214, ptr %186, align 8, !tbaa !43
  %215 = load i64, ptr %182, align 8, !tbaa !156
  %216 = mul nsw i64 %215, %213
  %217 = load i64, ptr %188, align 8, !tbaa !15
  %218 = mul nsw i64 %216, %217
  %219 = getelementptr inbounds double, ptr %212, i64 %218
  %220 = getelementptr inbounds nuw [8 x ptr], ptr %189, i64 0, i64 %195
  store ptr %219, ptr %220, align 8, !tbaa !157
  br label %221

221:                                              ; preds = %204, %207
  %222 = phi i64 [ %201, %204 ], [ 0, %207 ]
  %223 = phi ptr [ %206, %204 ], [ %219, %207 ]
  %224 = add nsw i64 %222, 1
  store i64 %224, ptr %200, align 8, !tbaa !30
  %225 = load i64, ptr %188, align 8, !tbaa !15
  %226 = mul nsw i64 %225, %222
  %227 = getelementptr inbounds double, ptr %223, i64 %226
  br i1 %191, label %293, label %228

228:                                              ; preds = %293, %221
  %229 = phi ptr [ %227, %221 ], [ %298, %293 ]
  %230 = load i64, ptr %192, align 64, !tbaa !16
  %231 = icmp sgt i64 %230, 0
  br i1 %231, label %232, label %280

232:                                              ; preds = %228
  %233 = trunc nuw nsw i64 %195 to i32
  %234 = and i64 %230, 3
  %235 = icmp ult i64 %230, 4
  br i1 %235, label %264, label %236

236:                                              ; preds = %232
  %237 = and i64 %230, 9223372036854775804
  br label %238

238:                                              ; preds = %238, %236
  %239 = phi i64 [ 0, %236 ], [ %261, %238 ]
  %240 = phi ptr [ %229, %236 ], [ %258, %238 ]
  %241 = phi i64 [ 0, %236 ], [ %262, %238 ]
  %242 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %239
  %243 = getelementptr i8, ptr %240, i64 8
  %244 = load <8 x double>, ptr %242, align 64, !tbaa !26
  %245 = extractelement <8 x double> %244, i32 %233
  store double %245, ptr %240, align 8, !tbaa !44
  %246 = or disjoint i64 %239, 1
  %247 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %246
  %248 = getelementptr i8, ptr %240, i64 16
  %249 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %250 = extractelement <8 x double> %249, i32 %233
  store double %250, ptr %243, align 8, !tbaa !44
  %251 = or disjoint i64 %239, 2
  %252 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %251
  %253 = getelementptr i8, ptr %240, i64 24
  %254 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %255 = extractelement <8 x double> %254, i32 %233
  store double %255, ptr %248, align 8, !tbaa !44
  %256 = or disjoint i64 %239, 3
  %257 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %256
  %258 = getelementptr i8, ptr %240, i64 32
  %259 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %260 = extractelement <8 x double> %259, i32 %233
  store double %260, ptr %253, align 8, !tbaa !44
  %261 = add nuw nsw i64 %239, 4
  %262 = add i64 %241, 4
  %263 = icmp eq i64 %262, %237
  br i1 %263, label %264, label %238, !llvm.loop !160

264:                                              ; preds = %238, %232
  %265 = phi ptr [ poison, %232 ], [ %258, %238 ]
  %266 = phi i64 [ 0, %232 ], [ %261, %238 ]
  %267 = phi ptr [ %229, %232 ], [ %258, %238 ]
  %268 = icmp eq i64 %234, 0
  br i1 %268, label %280, label %269

269:                                              ; preds = %264, %269
  %270 = phi i64 [ %277, %269 ], [ %266, %264 ]
  %271 = phi ptr [ %274, %269 ], [ %267, %264 ]
  %272 = phi i64 [ %278, %269 ], [ 0, %264 ]
  %273 = getelementptr inbounds nuw <8 x double>, ptr %28, i64 %270
  %274 = getelementptr i8, ptr %271, i64 8
  %275 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %276 = extractelement <8 x double> %275, i32 %233
  store double %276, ptr %271, align 8, !tbaa !44
  %277 = add nuw nsw i64 %270, 1
  %278 = add i64 %272, 1
  %279 = icmp eq i64 %278, %234
  br i1 %279, label %280, label %269, !llvm.loop !166

280:                                              ; preds = %264, %269, %228
  %281 = phi ptr [ %229, %228 ], [ %265, %264 ], [ %274, %269 ]
  %282 = load i64, ptr %36, align 8, !tbaa !46
  %283 = icmp eq i64 %282, 0
  br i1 %283, label %350, label %284

284:                                              ; preds = %280
  %285 = getelementptr inbounds nuw double, ptr %35, i64 %195
  %286 = load double, ptr %285, align 8, !tbaa !44
  %287 = getelementptr inbounds nuw i8, ptr %281, i64 8
  store double %286, ptr %281, align 8, !tbaa !44
  %288 = getelementptr inbounds nuw i8, ptr %285, i64 64
  %289 = load double, ptr %288, align 8, !tbaa !44
  %290 = getelementptr inbounds nuw i8, ptr %281, i64 16
  store double %289, ptr %287, align 8, !tbaa !44
  %291 = getelementptr inbounds nuw i8, ptr %285, i64 128
  %292 = load double, ptr %291, align 8, !tbaa !44
  store double %292, ptr %290, align 8, !tbaa !44
  br i1 %231, label %301, label %350

293:                                              ; preds = %221, %293
  %294 = phi ptr [ %299, %293 ], [ %190, %221 ]
  %295 = phi ptr [ %298, %293 ], [ %227, %221 ]
  %296 = getelementptr inbounds nuw double, ptr %294, i64 %195
  %297 = load double, ptr %296, align 8, !tbaa !44
  %298 = getelementptr inbounds nuw i8, ptr %295, i64 8
  store double %297, ptr %295, align 8, !tbaa !44
  %299 = getelementptr inbounds nuw i8, ptr %294, i64 64
  %300 = icmp ult ptr %299, %28
  br i1 %300, label %293, label %228, !llvm.loop !163

301:                                              ; preds = %284
  %302 = getelementptr inbounds nuw i8, ptr %281, i64 24
  %303 = trunc nuw nsw i64 %195 to i32
  br label %304

304:                                              ; preds = %301, %304
  %305 = phi i64 [ %348, %304 ], [ 0, %301 ]
  %306 = phi ptr [ %347, %304 ], [ %302, %301 ]
  %307 = mul nuw nsw i64 %305, 640
  %308 = getelementptr inbounds nuw i8, ptr %193, i64 %307
  %309 = load <8 x double>, ptr %308, align 64, !tbaa !26
  %310 = extractelement <8 x double> %309, i32 %303
  %311 = getelementptr inbounds nuw i8, ptr %306, i64 8
  store double %310, ptr %306, align 8, !tbaa !44
  %312 = getelementptr inbounds nuw i8, ptr %308, i64 64
  %313 = load <8 x double>, ptr %312, align 64, !tbaa !26
  %314 = extractelement <8 x double> %313, i32 %303
  %315 = getelementptr inbounds nuw i8, ptr %306, i64 16
  store double %314, ptr %311, align 8, !tbaa !44
  %316 = getelementptr inbounds nuw i8, ptr %308, i64 128
  %317 = load <8 x double>, ptr %316, align 64, !tbaa !26
  %318 = extractelement <8 x double> %317, i32 %303
  %319 = getelementptr inbounds nuw i8, ptr %306, i64 24
  store double %318, ptr %315, align 8, !tbaa !44
  %320 = getelementptr inbounds nuw i8, ptr %308, i64 192
  %321 = load <8 x double>, ptr %320, align 64, !tbaa !26
  %322 = extractelement <8 x double> %321, i32 %303
  %323 = getelementptr inbounds nuw i8, ptr %306, i64 32
  store double %322, ptr %319, align 8, !tbaa !44
  %324 = getelementptr inbounds nuw i8, ptr %308, i64 256
  %325 = load <8 x double>, ptr %324, align 64, !tbaa !26
  %326 = extractelement <8 x double> %325, i32 %303
  %327 = getelementptr inbounds nuw i8, ptr %306, i64 40
  store double %326, ptr %323, align 8, !tbaa !44
  %328 = getelementptr inbounds nuw i8, ptr %308, i64 320
  %329 = load <8 x double>, ptr %328, align 64, !tbaa !26
  %330 = extractelement <8 x double> %329, i32 %303
  %331 = getelementptr inbounds nuw i8, ptr %306, i64 48
  store double %330, ptr %327, align 8, !tbaa !44
  %332 = getelementptr inbounds nuw i8, ptr %308, i64 384
  %333 = load <8 x double>, ptr %332, align 64, !tbaa !26
  %334 = extractelement <8 x double> %333, i32 %303
  %335 = getelementptr inbounds nuw i8, ptr %306, i64 56
  store double %334, ptr %331, align 8, !tbaa !44
  %336 = getelementptr inbounds nuw i8, ptr %308, i64 448
  %337 = load <8 x double>, ptr %336, align 64, !tbaa !26
  %338 = extractelement <8 x double> %337, i32 %303
  %339 = getelementptr inbounds nuw i8, ptr %306, i64 64
  store double %338, ptr %335, align 8, !tbaa !44
  %340 = getelementptr inbounds nuw i8, ptr %308, i64 512
  %341 = load <8 x double>, ptr %340, align 64, !tbaa !26
  %342 = extractelement <8 x double> %341, i32 %303
  %343 = getelementptr inbounds nuw i8, ptr %306, i64 72
  store double %342, ptr %339, align 8, !tbaa !44
  %344 = getelementptr inbounds nuw i8, ptr %308, i64 576
  %345 = load <8 x double>, ptr %344, align 64, !tbaa !26
  %346 = extractelement <8 x double> %345, i32 %303
  %347 = getelementptr inbounds nuw i8, ptr %306, i64 80
  store double %346, ptr %343, align 8, !tbaa !44
  %348 = add nuw nsw i64 %305, 1
  %349 = icmp eq i64 %348, %230
  br i1 %349, label %350, label %304, !llvm.loop !160

350:                                              ; preds = %304, %284, %280, %194
  %351 = add nuw nsw i64 %195, 1
  %352 = icmp eq i64 %351, 8
  br i1 %352, label %353, label %194, !llvm.loop !164

353:                                              ; preds = %350
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 8) %2, i64 noundef %3) unnamed_addr #3 {
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
  %22 = load ptr, ptr %21, align 8, !tbaa !167
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
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2384
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2392
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2368
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %39 = load ptr, ptr %38, align 8, !tbaa !168
  br label %159

40:                                               ; preds = %46, %4
  %41 = phi i64 [ 0, %4 ], [ %59, %46 ]
  %42 = getelementptr double, ptr %24, i64 %41
  %43 = load double, ptr %42, align 8, !tbaa !44
  %44 = getelementptr <8 x double>, ptr %25, i64 %41
  store double %43, ptr %44, align 8, !tbaa !44
  %45 = icmp eq i64 %41, 36
  br i1 %45, label %26, label %46, !llvm.loop !169

46:                                               ; preds = %40
  %47 = or disjoint i64 %41, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !44
  %50 = getelementptr <8 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !44
  %51 = or disjoint i64 %41, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !44
  %54 = getelementptr <8 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !44
  %55 = or disjoint i64 %41, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !44
  %58 = getelementptr <8 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !44
  %59 = add nuw nsw i64 %41, 4
  br label %40

60:                                               ; preds = %572, %26
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
  store double 0.000000e+00, ptr %71, align 8, !tbaa !44
  %72 = getelementptr i8, ptr %70, i64 320
  store double 0.000000e+00, ptr %72, align 8, !tbaa !44
  %73 = load double, ptr %65, align 8, !tbaa !44
  store double %73, ptr %70, align 8, !tbaa !44
  %74 = load double, ptr %67, align 8, !tbaa !44
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 2688
  %76 = getelementptr inbounds double, ptr %75, i64 %6
  store double %74, ptr %76, align 8, !tbaa !44
  %77 = load double, ptr %69, align 8, !tbaa !44
  %78 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %79 = getelementptr inbounds double, ptr %78, i64 %6
  store double %77, ptr %79, align 8, !tbaa !44
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %81 = getelementptr inbounds double, ptr %80, i64 %6
  store double %77, ptr %81, align 8, !tbaa !44
  %82 = getelementptr double, ptr %62, i64 %6
  %83 = getelementptr i8, ptr %82, i64 256
  store double 0.000000e+00, ptr %83, align 8, !tbaa !44
  %84 = getelementptr i8, ptr %82, i64 320
  store double 0.000000e+00, ptr %84, align 8, !tbaa !44
  store double %73, ptr %82, align 8, !tbaa !44
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %86 = getelementptr inbounds double, ptr %85, i64 %6
  store double %74, ptr %86, align 8, !tbaa !44
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %88 = getelementptr inbounds double, ptr %87, i64 %6
  store double %77, ptr %88, align 8, !tbaa !44
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %90 = getelementptr inbounds double, ptr %89, i64 %6
  store double %77, ptr %90, align 8, !tbaa !44
  %91 = getelementptr double, ptr %63, i64 %6
  %92 = getelementptr i8, ptr %91, i64 256
  store double 0.000000e+00, ptr %92, align 8, !tbaa !44
  %93 = getelementptr i8, ptr %91, i64 320
  store double 0.000000e+00, ptr %93, align 8, !tbaa !44
  store double %73, ptr %91, align 8, !tbaa !44
  %94 = getelementptr inbounds nuw i8, ptr %0, i64 3456
  %95 = getelementptr inbounds double, ptr %94, i64 %6
  store double %74, ptr %95, align 8, !tbaa !44
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %97 = getelementptr inbounds double, ptr %96, i64 %6
  store double %77, ptr %97, align 8, !tbaa !44
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %99 = getelementptr inbounds double, ptr %98, i64 %6
  store double %77, ptr %99, align 8, !tbaa !44
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %101 = getelementptr inbounds double, ptr %100, i64 %6
  %102 = load double, ptr %101, align 8, !tbaa !44
  %103 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %104 = getelementptr inbounds double, ptr %103, i64 %6
  store double %102, ptr %104, align 8, !tbaa !44
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %106 = getelementptr inbounds double, ptr %105, i64 %6
  store double %102, ptr %106, align 8, !tbaa !44
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %108 = getelementptr inbounds double, ptr %107, i64 %6
  store double 1.000000e+09, ptr %108, align 8, !tbaa !44
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %110 = getelementptr inbounds double, ptr %109, i64 %6
  store double 0.000000e+00, ptr %110, align 8, !tbaa !44
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %112 = getelementptr inbounds double, ptr %111, i64 %6
  %113 = load double, ptr %112, align 8, !tbaa !44
  %114 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %115 = getelementptr inbounds double, ptr %114, i64 %6
  store double %113, ptr %115, align 8, !tbaa !44
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %117 = getelementptr inbounds double, ptr %116, i64 %6
  store double %113, ptr %117, align 8, !tbaa !44
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %119 = getelementptr inbounds double, ptr %118, i64 %6
  %120 = load double, ptr %119, align 8, !tbaa !44
  %121 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %122 = getelementptr inbounds double, ptr %121, i64 %6
  store double %120, ptr %122, align 8, !tbaa !44
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
  store double 0.000000e+00, ptr %136, align 8, !tbaa !44
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

159:                                              ; preds = %30, %572
  %160 = phi i64 [ 0, %30 ], [ %573, %572 ]
  %161 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %160
  %162 = load i64, ptr %33, align 16, !tbaa !21
  %163 = load i64, ptr %34, align 8, !tbaa !22
  %164 = load i64, ptr %35, align 64, !tbaa !16
  %165 = mul nsw i64 %164, %3
  %166 = add nsw i64 %165, %160
  %167 = getelementptr inbounds nuw i8, ptr %161, i64 8512
  %168 = load i64, ptr %167, align 64, !tbaa !31
  %169 = load ptr, ptr %36, align 8, !tbaa !170
  %170 = mul i64 %166, 368
  %171 = getelementptr i8, ptr %169, i64 %170
  %172 = getelementptr double, ptr %161, i64 %6
  br label %189

173:                                              ; preds = %189
  %174 = icmp eq i64 %168, 0
  %175 = load ptr, ptr %37, align 8, !tbaa !171
  %176 = getelementptr inbounds i64, ptr %39, i64 %166
  %177 = load i64, ptr %176, align 8, !tbaa !30
  %178 = mul nsw i64 %162, 3
  %179 = add nsw i64 %162, 1
  %180 = select i1 %174, i64 0, i64 2
  %181 = shl i64 %179, %180
  %182 = add nsw i64 %181, %178
  %183 = mul nsw i64 %177, %182
  %184 = getelementptr inbounds double, ptr %175, i64 %183
  %185 = getelementptr inbounds nuw i8, ptr %161, i64 960
  %186 = getelementptr inbounds double, ptr %185, i64 %6
  %187 = load double, ptr %186, align 8, !tbaa !44
  %188 = load double, ptr %172, align 8, !tbaa !44
  br i1 %174, label %200, label %205

189:                                              ; preds = %189, %159
  %190 = phi i64 [ 0, %159 ], [ %198, %189 ]
  %191 = getelementptr double, ptr %171, i64 %190
  %192 = load double, ptr %191, align 8, !tbaa !44
  %193 = getelementptr <8 x double>, ptr %172, i64 %190
  store double %192, ptr %193, align 8, !tbaa !44
  %194 = or disjoint i64 %190, 1
  %195 = getelementptr double, ptr %171, i64 %194
  %196 = load double, ptr %195, align 8, !tbaa !44
  %197 = getelementptr <8 x double>, ptr %172, i64 %194
  store double %196, ptr %197, align 8, !tbaa !44
  %198 = add nuw nsw i64 %190, 2
  %199 = icmp eq i64 %198, 46
  br i1 %199, label %173, label %189, !llvm.loop !172

200:                                              ; preds = %173
  %201 = getelementptr inbounds nuw i8, ptr %161, i64 8520
  %202 = getelementptr inbounds [8 x ptr], ptr %201, i64 0, i64 %6
  %203 = load ptr, ptr %202, align 8, !tbaa !157
  %204 = icmp ne ptr %203, %184
  br label %205

205:                                              ; preds = %200, %173
  %206 = phi i1 [ true, %173 ], [ %204, %200 ]
  %207 = getelementptr inbounds nuw i8, ptr %161, i64 8520
  %208 = getelementptr inbounds [8 x ptr], ptr %207, i64 0, i64 %6
  store ptr %184, ptr %208, align 8, !tbaa !157
  %209 = icmp sgt i64 %162, 0
  %210 = select i1 %209, i1 %206, i1 false
  br i1 %210, label %211, label %241

211:                                              ; preds = %205
  %212 = getelementptr inbounds nuw i8, ptr %161, i64 8672
  %213 = load ptr, ptr %212, align 32, !tbaa !75
  %214 = getelementptr double, ptr %213, i64 %6
  %215 = getelementptr double, ptr %184, i64 %162
  %216 = getelementptr inbounds nuw i8, ptr %161, i64 8680
  %217 = load ptr, ptr %216, align 8, !tbaa !51
  %218 = getelementptr double, ptr %217, i64 %6
  %219 = shl i64 %162, 4
  %220 = getelementptr i8, ptr %184, i64 %219
  %221 = getelementptr inbounds nuw i8, ptr %161, i64 8688
  %222 = load ptr, ptr %221, align 16, !tbaa !142
  %223 = getelementptr double, ptr %222, i64 %6
  %224 = and i64 %162, 1
  %225 = icmp eq i64 %162, 1
  br i1 %225, label %228, label %226

226:                                              ; preds = %211
  %227 = and i64 %162, 9223372036854775806
  br label %253

228:                                              ; preds = %253, %211
  %229 = phi i64 [ 0, %211 ], [ %275, %253 ]
  %230 = icmp eq i64 %224, 0
  br i1 %230, label %241, label %231

231:                                              ; preds = %228
  %232 = getelementptr inbounds nuw double, ptr %184, i64 %229
  %233 = load double, ptr %232, align 8, !tbaa !44
  %234 = getelementptr <8 x double>, ptr %214, i64 %229
  store double %233, ptr %234, align 8, !tbaa !44
  %235 = getelementptr double, ptr %215, i64 %229
  %236 = load double, ptr %235, align 8, !tbaa !44
  %237 = getelementptr <8 x double>, ptr %218, i64 %229
  store double %236, ptr %237, align 8, !tbaa !44
  %238 = getelementptr double, ptr %220, i64 %229
  %239 = load double, ptr %238, align 8, !tbaa !44
  %240 = getelementptr <8 x double>, ptr %223, i64 %229
  store double %239, ptr %240, align 8, !tbaa !44
  br label %241

241:                                              ; preds = %231, %228, %205
  %242 = icmp sgt i64 %181, 0
  %243 = select i1 %242, i1 %206, i1 false
  br i1 %243, label %244, label %290

244:                                              ; preds = %241
  %245 = getelementptr double, ptr %184, i64 %178
  %246 = getelementptr inbounds nuw i8, ptr %161, i64 8696
  %247 = load ptr, ptr %246, align 8, !tbaa !36
  %248 = getelementptr double, ptr %247, i64 %6
  %249 = and i64 %181, 3
  %250 = icmp ult i64 %181, 4
  br i1 %250, label %278, label %251

251:                                              ; preds = %244
  %252 = and i64 %181, 9223372036854775804
  br label %299

253:                                              ; preds = %253, %226
  %254 = phi i64 [ 0, %226 ], [ %275, %253 ]
  %255 = phi i64 [ 0, %226 ], [ %276, %253 ]
  %256 = getelementptr inbounds nuw double, ptr %184, i64 %254
  %257 = load double, ptr %256, align 8, !tbaa !44
  %258 = getelementptr <8 x double>, ptr %214, i64 %254
  store double %257, ptr %258, align 8, !tbaa !44
  %259 = getelementptr double, ptr %215, i64 %254
  %260 = load double, ptr %259, align 8, !tbaa !44
  %261 = getelementptr <8 x double>, ptr %218, i64 %254
  store double %260, ptr %261, align 8, !tbaa !44
  %262 = getelementptr double, ptr %220, i64 %254
  %263 = load double, ptr %262, align 8, !tbaa !44
  %264 = getelementptr <8 x double>, ptr %223, i64 %254
  store double %263, ptr %264, align 8, !tbaa !44
  %265 = or disjoint i64 %254, 1
  %266 = getelementptr inbounds nuw double, ptr %184, i64 %265
  %267 = load double, ptr %266, align 8, !tbaa !44
  %268 = getelementptr <8 x double>, ptr %214, i64 %265
  store double %267, ptr %268, align 8, !tbaa !44
  %269 = getelementptr double, ptr %215, i64 %265
  %270 = load double, ptr %269, align 8, !tbaa !44
  %271 = getelementptr <8 x double>, ptr %218, i64 %265
  store double %270, ptr %271, align 8, !tbaa !44
  %272 = getelementptr double, ptr %220, i64 %265
  %273 = load double, ptr %272, align 8, !tbaa !44
  %274 = getelementptr <8 x double>, ptr %223, i64 %265
  store double %273, ptr %274, align 8, !tbaa !44
  %275 = add nuw nsw i64 %254, 2
  %276 = add i64 %255, 2
  %277 = icmp eq i64 %276, %227
  br i1 %277, label %228, label %253, !llvm.loop !173

278:                                              ; preds = %299, %244
  %279 = phi i64 [ 0, %244 ], [ %317, %299 ]
  %280 = icmp eq i64 %249, 0
  br i1 %280, label %290, label %281

281:                                              ; preds = %278, %281
  %282 = phi i64 [ %287, %281 ], [ %279, %278 ]
  %283 = phi i64 [ %288, %281 ], [ 0, %278 ]
  %284 = getelementptr double, ptr %245, i64 %282
  %285 = load double, ptr %284, align 8, !tbaa !44
  %286 = getelementptr <8 x double>, ptr %248, i64 %282
  store double %285, ptr %286, align 8, !tbaa !44
  %287 = add nuw nsw i64 %282, 1
  %288 = add i64 %283, 1
  %289 = icmp eq i64 %288, %249
  br i1 %289, label %290, label %281, !llvm.loop !174

290:                                              ; preds = %278, %281, %241
  %291 = icmp ne i64 %168, 0
  %292 = icmp sgt i64 %162, -1
  %293 = select i1 %291, i1 %292, i1 false
  br i1 %293, label %294, label %320

294:                                              ; preds = %290
  %295 = fdiv double 1.000000e+00, %188
  %296 = getelementptr inbounds nuw i8, ptr %161, i64 8696
  %297 = load ptr, ptr %296, align 8, !tbaa !36
  %298 = getelementptr double, ptr %297, i64 %6
  br label %460

299:                                              ; preds = %299, %251
  %300 = phi i64 [ 0, %251 ], [ %317, %299 ]
  %301 = phi i64 [ 0, %251 ], [ %318, %299 ]
  %302 = getelementptr double, ptr %245, i64 %300
  %303 = load double, ptr %302, align 8, !tbaa !44
  %304 = getelementptr <8 x double>, ptr %248, i64 %300
  store double %303, ptr %304, align 8, !tbaa !44
  %305 = or disjoint i64 %300, 1
  %306 = getelementptr double, ptr %245, i64 %305
  %307 = load double, ptr %306, align 8, !tbaa !44
  %308 = getelementptr <8 x double>, ptr %248, i64 %305
  store double %307, ptr %308, align 8, !tbaa !44
  %309 = or disjoint i64 %300, 2
  %310 = getelementptr double, ptr %245, i64 %309
  %311 = load double, ptr %310, align 8, !tbaa !44
  %312 = getelementptr <8 x double>, ptr %248, i64 %309
  store double %311, ptr %312, align 8, !tbaa !44
  %313 = or disjoint i64 %300, 3
  %314 = getelementptr double, ptr %245, i64 %313
  %315 = load double, ptr %314, align 8, !tbaa !44
  %316 = getelementptr <8 x double>, ptr %248, i64 %313
  store double %315, ptr %316, align 8, !tbaa !44
  %317 = add nuw nsw i64 %300, 4
  %318 = add i64 %301, 4
  %319 = icmp eq i64 %318, %252
  br i1 %319, label %278, label %299, !llvm.loop !175

320:                                              ; preds = %460, %290
  %321 = getelementptr inbounds nuw i8, ptr %161, i64 2560
  %322 = getelementptr inbounds double, ptr %321, i64 %6
  %323 = load double, ptr %322, align 8, !tbaa !44
  %324 = getelementptr inbounds nuw i8, ptr %161, i64 2624
  %325 = getelementptr inbounds double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !44
  %327 = getelementptr inbounds nuw i8, ptr %161, i64 2688
  %328 = getelementptr inbounds double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !44
  %330 = getelementptr inbounds nuw i8, ptr %161, i64 2752
  %331 = getelementptr inbounds double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !44
  %333 = tail call double @llvm.fmuladd.f64(double %188, double %332, double %329)
  %334 = tail call double @llvm.fmuladd.f64(double %188, double %333, double %326)
  %335 = tail call double @llvm.fmuladd.f64(double %188, double %334, double %323)
  %336 = getelementptr inbounds nuw i8, ptr %161, i64 832
  %337 = getelementptr inbounds double, ptr %336, i64 %6
  %338 = load double, ptr %337, align 8, !tbaa !44
  %339 = getelementptr inbounds nuw i8, ptr %161, i64 1408
  %340 = getelementptr inbounds double, ptr %339, i64 %6
  %341 = load double, ptr %340, align 8, !tbaa !44
  %342 = getelementptr inbounds nuw i8, ptr %161, i64 1536
  %343 = getelementptr inbounds double, ptr %342, i64 %6
  %344 = load double, ptr %343, align 8, !tbaa !44
  %345 = fsub double %341, %344
  %346 = fmul double %338, %345
  %347 = getelementptr inbounds nuw i8, ptr %161, i64 2944
  %348 = getelementptr inbounds nuw i8, ptr %161, i64 3840
  %349 = getelementptr inbounds nuw i8, ptr %161, i64 4736
  %350 = getelementptr inbounds nuw i8, ptr %161, i64 896
  %351 = getelementptr inbounds double, ptr %350, i64 %6
  %352 = getelementptr inbounds nuw i8, ptr %161, i64 1024
  %353 = getelementptr inbounds double, ptr %352, i64 %6
  %354 = getelementptr double, ptr %347, i64 %6
  %355 = getelementptr i8, ptr %354, i64 320
  store double 0.000000e+00, ptr %355, align 8, !tbaa !44
  %356 = getelementptr i8, ptr %354, i64 384
  store double 0.000000e+00, ptr %356, align 8, !tbaa !44
  %357 = getelementptr i8, ptr %354, i64 448
  store double 0.000000e+00, ptr %357, align 8, !tbaa !44
  %358 = getelementptr i8, ptr %354, i64 512
  store double 0.000000e+00, ptr %358, align 8, !tbaa !44
  %359 = getelementptr i8, ptr %354, i64 576
  store double 0.000000e+00, ptr %359, align 8, !tbaa !44
  %360 = getelementptr i8, ptr %354, i64 704
  store double 0.000000e+00, ptr %360, align 8, !tbaa !44
  %361 = getelementptr i8, ptr %354, i64 768
  store double 0.000000e+00, ptr %361, align 8, !tbaa !44
  store double %188, ptr %354, align 8, !tbaa !44
  %362 = getelementptr inbounds nuw i8, ptr %161, i64 3008
  %363 = getelementptr inbounds double, ptr %362, i64 %6
  store double %341, ptr %363, align 8, !tbaa !44
  %364 = load double, ptr %351, align 8, !tbaa !44
  %365 = getelementptr inbounds nuw i8, ptr %161, i64 3072
  %366 = getelementptr inbounds double, ptr %365, i64 %6
  store double %364, ptr %366, align 8, !tbaa !44
  %367 = getelementptr inbounds nuw i8, ptr %161, i64 3136
  %368 = getelementptr inbounds double, ptr %367, i64 %6
  store double %346, ptr %368, align 8, !tbaa !44
  %369 = getelementptr inbounds nuw i8, ptr %161, i64 3584
  %370 = getelementptr inbounds double, ptr %369, i64 %6
  store double %187, ptr %370, align 8, !tbaa !44
  %371 = load double, ptr %353, align 8, !tbaa !44
  %372 = getelementptr inbounds nuw i8, ptr %161, i64 3200
  %373 = getelementptr inbounds double, ptr %372, i64 %6
  store double %371, ptr %373, align 8, !tbaa !44
  %374 = getelementptr inbounds nuw i8, ptr %161, i64 3776
  %375 = getelementptr inbounds double, ptr %374, i64 %6
  store double %335, ptr %375, align 8, !tbaa !44
  %376 = getelementptr double, ptr %348, i64 %6
  %377 = getelementptr i8, ptr %376, i64 320
  store double 0.000000e+00, ptr %377, align 8, !tbaa !44
  %378 = getelementptr i8, ptr %376, i64 384
  store double 0.000000e+00, ptr %378, align 8, !tbaa !44
  %379 = getelementptr i8, ptr %376, i64 448
  store double 0.000000e+00, ptr %379, align 8, !tbaa !44
  %380 = getelementptr i8, ptr %376, i64 512
  store double 0.000000e+00, ptr %380, align 8, !tbaa !44
  %381 = getelementptr i8, ptr %376, i64 576
  store double 0.000000e+00, ptr %381, align 8, !tbaa !44
  %382 = getelementptr i8, ptr %376, i64 704
  store double 0.000000e+00, ptr %382, align 8, !tbaa !44
  %383 = getelementptr i8, ptr %376, i64 768
  store double 0.000000e+00, ptr %383, align 8, !tbaa !44
  store double %188, ptr %376, align 8, !tbaa !44
  %384 = getelementptr inbounds nuw i8, ptr %161, i64 3904
  %385 = getelementptr inbounds double, ptr %384, i64 %6
  store double %341, ptr %385, align 8, !tbaa !44
  %386 = getelementptr inbounds nuw i8, ptr %161, i64 3968
  %387 = getelementptr inbounds double, ptr %386, i64 %6
  store double %364, ptr %387, align 8, !tbaa !44
  %388 = getelementptr inbounds nuw i8, ptr %161, i64 4032
  %389 = getelementptr inbounds double, ptr %388, i64 %6
  store double %346, ptr %389, align 8, !tbaa !44
  %390 = getelementptr inbounds nuw i8, ptr %161, i64 4480
  %391 = getelementptr inbounds double, ptr %390, i64 %6
  store double %187, ptr %391, align 8, !tbaa !44
  %392 = getelementptr inbounds nuw i8, ptr %161, i64 4096
  %393 = getelementptr inbounds double, ptr %392, i64 %6
  store double %371, ptr %393, align 8, !tbaa !44
  %394 = getelementptr inbounds nuw i8, ptr %161, i64 4672
  %395 = getelementptr inbounds double, ptr %394, i64 %6
  store double %335, ptr %395, align 8, !tbaa !44
  %396 = getelementptr double, ptr %349, i64 %6
  %397 = getelementptr i8, ptr %396, i64 320
  store double 0.000000e+00, ptr %397, align 8, !tbaa !44
  %398 = getelementptr i8, ptr %396, i64 384
  store double 0.000000e+00, ptr %398, align 8, !tbaa !44
  %399 = getelementptr i8, ptr %396, i64 448
  store double 0.000000e+00, ptr %399, align 8, !tbaa !44
  %400 = getelementptr i8, ptr %396, i64 512
  store double 0.000000e+00, ptr %400, align 8, !tbaa !44
  %401 = getelementptr i8, ptr %396, i64 576
  store double 0.000000e+00, ptr %401, align 8, !tbaa !44
  %402 = getelementptr i8, ptr %396, i64 704
  store double 0.000000e+00, ptr %402, align 8, !tbaa !44
  %403 = getelementptr i8, ptr %396, i64 768
  store double 0.000000e+00, ptr %403, align 8, !tbaa !44
  store double %188, ptr %396, align 8, !tbaa !44
  %404 = load double, ptr %340, align 8, !tbaa !44
  %405 = getelementptr inbounds nuw i8, ptr %161, i64 4800
  %406 = getelementptr inbounds double, ptr %405, i64 %6
  store double %404, ptr %406, align 8, !tbaa !44
  %407 = getelementptr inbounds nuw i8, ptr %161, i64 4864
  %408 = getelementptr inbounds double, ptr %407, i64 %6
  store double %364, ptr %408, align 8, !tbaa !44
  %409 = getelementptr inbounds nuw i8, ptr %161, i64 4928
  %410 = getelementptr inbounds double, ptr %409, i64 %6
  store double %346, ptr %410, align 8, !tbaa !44
  %411 = getelementptr inbounds nuw i8, ptr %161, i64 5376
  %412 = getelementptr inbounds double, ptr %411, i64 %6
  store double %187, ptr %412, align 8, !tbaa !44
  %413 = getelementptr inbounds nuw i8, ptr %161, i64 4992
  %414 = getelementptr inbounds double, ptr %413, i64 %6
  store double %371, ptr %414, align 8, !tbaa !44
  %415 = getelementptr inbounds nuw i8, ptr %161, i64 5568
  %416 = getelementptr inbounds double, ptr %415, i64 %6
  store double %335, ptr %416, align 8, !tbaa !44
  %417 = load double, ptr %351, align 8, !tbaa !44
  %418 = fadd double %346, %417
  %419 = getelementptr inbounds nuw i8, ptr %161, i64 1600
  %420 = getelementptr inbounds double, ptr %419, i64 %6
  store double %418, ptr %420, align 8, !tbaa !44
  %421 = fcmp ogt double %417, 0.000000e+00
  %422 = fdiv double 1.000000e+00, %417
  %423 = select i1 %421, double %422, double 0.000000e+00
  %424 = getelementptr inbounds nuw i8, ptr %161, i64 7680
  %425 = getelementptr inbounds double, ptr %424, i64 %6
  store double %423, ptr %425, align 8, !tbaa !44
  %426 = getelementptr inbounds nuw i8, ptr %161, i64 704
  %427 = getelementptr inbounds double, ptr %426, i64 %6
  %428 = load double, ptr %427, align 8, !tbaa !44
  %429 = fdiv double 1.000000e+00, %428
  %430 = getelementptr inbounds nuw i8, ptr %161, i64 7744
  %431 = getelementptr inbounds double, ptr %430, i64 %6
  store double %429, ptr %431, align 8, !tbaa !44
  %432 = load double, ptr %337, align 8, !tbaa !44
  %433 = fdiv double 1.000000e+00, %432
  %434 = getelementptr inbounds nuw i8, ptr %161, i64 7808
  %435 = getelementptr inbounds double, ptr %434, i64 %6
  store double %433, ptr %435, align 8, !tbaa !44
  %436 = getelementptr inbounds nuw i8, ptr %161, i64 5952
  %437 = getelementptr inbounds nuw i8, ptr %161, i64 6784
  %438 = getelementptr inbounds nuw i8, ptr %161, i64 6848
  %439 = getelementptr inbounds nuw i8, ptr %161, i64 7552
  %440 = getelementptr inbounds double, ptr %436, i64 %6
  store double %187, ptr %440, align 8, !tbaa !44
  %441 = getelementptr inbounds double, ptr %437, i64 %6
  store double %187, ptr %441, align 8, !tbaa !44
  %442 = getelementptr inbounds double, ptr %438, i64 %6
  store double %187, ptr %442, align 8, !tbaa !44
  %443 = getelementptr inbounds double, ptr %439, i64 %6
  store double %187, ptr %443, align 8, !tbaa !44
  %444 = getelementptr inbounds nuw i8, ptr %161, i64 6016
  %445 = getelementptr inbounds nuw i8, ptr %161, i64 6080
  %446 = getelementptr inbounds nuw i8, ptr %161, i64 7616
  %447 = getelementptr inbounds nuw i8, ptr %161, i64 7488
  %448 = getelementptr inbounds nuw i8, ptr %161, i64 7232
  %449 = getelementptr inbounds double, ptr %444, i64 %6
  store double 0.000000e+00, ptr %449, align 8, !tbaa !44
  %450 = getelementptr inbounds double, ptr %445, i64 %6
  store double 0.000000e+00, ptr %450, align 8, !tbaa !44
  %451 = getelementptr inbounds double, ptr %446, i64 %6
  store double 0.000000e+00, ptr %451, align 8, !tbaa !44
  %452 = getelementptr inbounds double, ptr %447, i64 %6
  store double 0.000000e+00, ptr %452, align 8, !tbaa !44
  %453 = getelementptr inbounds double, ptr %448, i64 %6
  store double 0.000000e+00, ptr %453, align 8, !tbaa !44
  %454 = getelementptr inbounds nuw i8, ptr %161, i64 8320
  %455 = getelementptr inbounds i64, ptr %454, i64 %6
  store i64 0, ptr %455, align 8, !tbaa !30
  %456 = getelementptr inbounds nuw i8, ptr %161, i64 8384
  %457 = getelementptr inbounds i64, ptr %456, i64 %6
  store i64 -1, ptr %457, align 8, !tbaa !30
  %458 = getelementptr inbounds nuw i8, ptr %161, i64 8448
  %459 = getelementptr inbounds i64, ptr %458, i64 %6
  store i64 0, ptr %459, align 8, !tbaa !30
  br i1 %209, label %482, label %498

460:                                              ; preds = %294, %460
  %461 = phi i64 [ 0, %294 ], [ %480, %460 ]
  %462 = icmp slt i64 %461, %168
  %463 = select i1 %462, double %295, double 1.000000e+00
  %464 = shl i64 %461, 8
  %465 = getelementptr i8, ptr %298, i64 %464
  %466 = load double, ptr %465, align 8, !tbaa !44
  %467 = fmul double %463, %466
  store double %467, ptr %465, align 8, !tbaa !44
  %468 = fdiv double %463, %188
  %469 = getelementptr i8, ptr %465, i64 64
  %470 = load double, ptr %469, align 8, !tbaa !44
  %471 = fmul double %468, %470
  store double %471, ptr %469, align 8, !tbaa !44
  %472 = fdiv double %468, %188
  %473 = getelementptr i8, ptr %465, i64 128
  %474 = load double, ptr %473, align 8, !tbaa !44
  %475 = fmul double %472, %474
  store double %475, ptr %473, align 8, !tbaa !44
  %476 = fdiv double %472, %188
  %477 = getelementptr i8, ptr %465, i64 192
  %478 = load double, ptr %477, align 8, !tbaa !44
  %479 = fmul double %476, %478
  store double %479, ptr %477, align 8, !tbaa !44
  %480 = add nuw nsw i64 %461, 1
  %481 = icmp slt i64 %461, %162
  br i1 %481, label %460, label %320, !llvm.loop !176

482:                                              ; preds = %320
  %483 = getelementptr inbounds nuw i8, ptr %161, i64 8600
  %484 = load ptr, ptr %483, align 8, !tbaa !59
  %485 = getelementptr double, ptr %484, i64 %6
  %486 = getelementptr inbounds nuw i8, ptr %161, i64 8592
  %487 = load ptr, ptr %486, align 16, !tbaa !49
  %488 = getelementptr double, ptr %487, i64 %6
  %489 = getelementptr inbounds nuw i8, ptr %161, i64 8584
  %490 = load ptr, ptr %489, align 8, !tbaa !60
  %491 = getelementptr double, ptr %490, i64 %6
  %492 = getelementptr inbounds nuw i8, ptr %161, i64 8624
  %493 = load ptr, ptr %492, align 16, !tbaa !50
  %494 = getelementptr double, ptr %493, i64 %6
  %495 = getelementptr inbounds nuw i8, ptr %161, i64 8616
  %496 = load ptr, ptr %495, align 8, !tbaa !67
  %497 = getelementptr double, ptr %496, i64 %6
  br label %511

498:                                              ; preds = %511, %320
  %499 = icmp slt i64 %163, 0
  br i1 %499, label %572, label %500

500:                                              ; preds = %498
  %501 = getelementptr inbounds nuw i8, ptr %161, i64 8768
  %502 = load ptr, ptr %501, align 64, !tbaa !62
  %503 = getelementptr double, ptr %502, i64 %6
  %504 = getelementptr inbounds nuw i8, ptr %161, i64 8760
  %505 = load ptr, ptr %504, align 8, !tbaa !52
  %506 = getelementptr double, ptr %505, i64 %6
  %507 = icmp eq i64 %163, 0
  br i1 %507, label %520, label %508

508:                                              ; preds = %500
  %509 = add nuw i64 %163, 1
  %510 = and i64 %509, -2
  br label %545

511:                                              ; preds = %482, %511
  %512 = phi i64 [ 0, %482 ], [ %518, %511 ]
  %513 = getelementptr <8 x double>, ptr %485, i64 %512
  store double %187, ptr %513, align 8, !tbaa !44
  %514 = getelementptr <8 x double>, ptr %488, i64 %512
  store double %187, ptr %514, align 8, !tbaa !44
  %515 = getelementptr <8 x double>, ptr %491, i64 %512
  store double %187, ptr %515, align 8, !tbaa !44
  %516 = getelementptr <8 x double>, ptr %494, i64 %512
  store double 1.000000e+00, ptr %516, align 8, !tbaa !44
  %517 = getelementptr <8 x double>, ptr %497, i64 %512
  store double 1.000000e+00, ptr %517, align 8, !tbaa !44
  %518 = add nuw nsw i64 %512, 1
  %519 = icmp eq i64 %518, %162
  br i1 %519, label %498, label %511, !llvm.loop !177

520:                                              ; preds = %559, %500
  %521 = phi i64 [ 0, %500 ], [ %563, %559 ]
  %522 = and i64 %163, 1
  %523 = icmp eq i64 %522, 0
  br i1 %523, label %524, label %532

524:                                              ; preds = %520
  %525 = icmp slt i64 %521, %163
  br i1 %525, label %528, label %526

526:                                              ; preds = %524
  %527 = load double, ptr %340, align 8, !tbaa !44
  br label %528

528:                                              ; preds = %526, %524
  %529 = phi double [ %527, %526 ], [ %335, %524 ]
  %530 = getelementptr <8 x double>, ptr %503, i64 %521
  store double %529, ptr %530, align 8, !tbaa !44
  %531 = getelementptr <8 x double>, ptr %506, i64 %521
  store double %529, ptr %531, align 8, !tbaa !44
  br label %532

532:                                              ; preds = %520, %528
  %533 = icmp eq i64 %163, 0
  br i1 %533, label %572, label %534

534:                                              ; preds = %532
  %535 = getelementptr inbounds nuw i8, ptr %161, i64 8720
  %536 = load ptr, ptr %535, align 16, !tbaa !64
  %537 = getelementptr double, ptr %536, i64 %6
  %538 = getelementptr inbounds nuw i8, ptr %161, i64 8712
  %539 = load ptr, ptr %538, align 8, !tbaa !53
  %540 = getelementptr double, ptr %539, i64 %6
  %541 = and i64 %163, 1
  %542 = icmp eq i64 %163, 1
  br i1 %542, label %566, label %543

543:                                              ; preds = %534
  %544 = and i64 %163, 9223372036854775806
  br label %576

545:                                              ; preds = %559, %508
  %546 = phi i64 [ 0, %508 ], [ %563, %559 ]
  %547 = phi i64 [ 0, %508 ], [ %564, %559 ]
  %548 = icmp slt i64 %546, %163
  br i1 %548, label %551, label %549

549:                                              ; preds = %545
  %550 = load double, ptr %340, align 8, !tbaa !44
  br label %551

551:                                              ; preds = %545, %549
  %552 = phi double [ %550, %549 ], [ %335, %545 ]
  %553 = getelementptr <8 x double>, ptr %503, i64 %546
  store double %552, ptr %553, align 8, !tbaa !44
  %554 = getelementptr <8 x double>, ptr %506, i64 %546
  store double %552, ptr %554, align 8, !tbaa !44
  %555 = or disjoint i64 %546, 1
  %556 = icmp slt i64 %555, %163
  br i1 %556, label %559, label %557

557:                                              ; preds = %551
  %558 = load double, ptr %340, align 8, !tbaa !44
  br label %559

559:                                              ; preds = %557, %551
  %560 = phi double [ %558, %557 ], [ %335, %551 ]
  %561 = getelementptr <8 x double>, ptr %503, i64 %555
  store double %560, ptr %561, align 8, !tbaa !44
  %562 = getelementptr <8 x double>, ptr %506, i64 %555
  store double %560, ptr %562, align 8, !tbaa !44
  %563 = add nuw i64 %546, 2
  %564 = add i64 %547, 2
  %565 = icmp eq i64 %564, %510
  br i1 %565, label %520, label %545, !llvm.loop !178

566:                                              ; preds = %576, %534
  %567 = phi i64 [ 0, %534 ], [ %584, %576 ]
  %568 = icmp eq i64 %541, 0
  br i1 %568, label %572, label %569

569:                                              ; preds = %566
  %570 = getelementptr <8 x double>, ptr %537, i64 %567
  store double %187, ptr %570, align 8, !tbaa !44
  %571 = getelementptr <8 x double>, ptr %540, i64 %567
  store double %187, ptr %571, align 8, !tbaa !44
  br label %572

572:                                              ; preds = %569, %566, %498, %532
  %573 = add nuw nsw i64 %160, 1
  %574 = load i64, ptr %27, align 8, !tbaa !20
  %575 = icmp slt i64 %573, %574
  br i1 %575, label %159, label %60, !llvm.loop !179

576:                                              ; preds = %576, %543
  %577 = phi i64 [ 0, %543 ], [ %584, %576 ]
  %578 = phi i64 [ 0, %543 ], [ %585, %576 ]
  %579 = getelementptr <8 x double>, ptr %537, i64 %577
  store double %187, ptr %579, align 8, !tbaa !44
  %580 = getelementptr <8 x double>, ptr %540, i64 %577
  store double %187, ptr %580, align 8, !tbaa !44
  %581 = or disjoint i64 %577, 1
  %582 = getelementptr <8 x double>, ptr %537, i64 %581
  store double %187, ptr %582, align 8, !tbaa !44
  %583 = getelementptr <8 x double>, ptr %540, i64 %581
  store double %187, ptr %583, align 8, !tbaa !44
  %584 = add nuw nsw i64 %577, 2
  %585 = add i64 %578, 2
  %586 = icmp eq i64 %585, %544
  br i1 %586, label %566, label %576, !llvm.loop !180
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6224) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !181
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !182
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
  %22 = load ptr, ptr %21, align 8, !tbaa !183
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
  br i1 %68, label %69, label %36, !llvm.loop !184

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
  br i1 %138, label %139, label %117, !llvm.loop !185

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
  br i1 %241, label %235, label %242, !llvm.loop !186

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
!5 = !{!"_ZTS3Job", !6, i64 0, !6, i64 8, !6, i64 16, !6, i64 24, !6, i64 32, !6, i64 40, !6, i64 48, !6, i64 56, !9, i64 64, !10, i64 72, !10, i64 80, !10, i64 88, !10, i64 96, !12, i64 104, !12, i64 112, !12, i64 120, !12, i64 128, !12, i64 136, !10, i64 144, !12, i64 152, !12, i64 160, !10, i64 168, !12, i64 176, !6, i64 184, !6, i64 192, !10, i64 200, !10, i64 208, !10, i64 216}
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
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3840, !7, i64 4736, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !7, i64 7552, !7, i64 7616, !7, i64 7680, !7, i64 7744, !7, i64 7808, !34, i64 7872, !7, i64 8256, !7, i64 8320, !7, i64 8384, !7, i64 8448, !6, i64 8512, !7, i64 8520, !11, i64 8584, !11, i64 8592, !11, i64 8600, !11, i64 8608, !11, i64 8616, !11, i64 8624, !11, i64 8632, !11, i64 8640, !11, i64 8648, !11, i64 8656, !11, i64 8664, !11, i64 8672, !11, i64 8680, !11, i64 8688, !11, i64 8696, !11, i64 8704, !11, i64 8712, !11, i64 8720, !11, i64 8728, !11, i64 8736, !11, i64 8744, !11, i64 8752, !11, i64 8760, !11, i64 8768}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320}
!35 = !{!11, !11, i64 0}
!36 = !{!32, !11, i64 8696}
!37 = distinct !{!37, !38}
!38 = !{!"llvm.loop.mustprogress"}
!39 = !{!17, !11, i64 6208}
!40 = !{!5, !6, i64 0}
!41 = distinct !{!41, !38}
!42 = !{!5, !6, i64 184}
!43 = !{!5, !6, i64 192}
!44 = !{!9, !9, i64 0}
!45 = !{!5, !10, i64 216}
!46 = !{!5, !6, i64 40}
!47 = !{!5, !10, i64 200}
!48 = !{!5, !10, i64 208}
!49 = !{!32, !11, i64 8592}
!50 = !{!32, !11, i64 8624}
!51 = !{!32, !11, i64 8680}
!52 = !{!32, !11, i64 8760}
!53 = !{!32, !11, i64 8712}
!54 = distinct !{!54, !38}
!55 = distinct !{!55, !38}
!56 = distinct !{!56, !38}
!57 = distinct !{!57, !38}
!58 = distinct !{!58, !38}
!59 = !{!32, !11, i64 8600}
!60 = !{!32, !11, i64 8584}
!61 = !{!32, !11, i64 8608}
!62 = !{!32, !11, i64 8768}
!63 = distinct !{!63, !38}
!64 = !{!32, !11, i64 8720}
!65 = !{!32, !11, i64 8728}
!66 = distinct !{!66, !38}
!67 = !{!32, !11, i64 8616}
!68 = distinct !{!68, !38}
!69 = !{!70}
!70 = distinct !{!70, !71, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!71 = distinct !{!71, !"_ZL4stirRK5GroupRK5Piece"}
!72 = !{!73}
!73 = distinct !{!73, !74, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!74 = distinct !{!74, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!75 = !{!32, !11, i64 8672}
!76 = distinct !{!76, !38}
!77 = distinct !{!77, !38}
!78 = distinct !{!78, !38}
!79 = distinct !{!79, !38}
!80 = distinct !{!80, !38}
!81 = distinct !{!81, !38}
!82 = distinct !{!82, !38}
!83 = !{!84}
!84 = distinct !{!84, !85, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!85 = distinct !{!85, !"_ZL4stirRK5GroupRK5Piece"}
!86 = !{!32, !11, i64 8648}
!87 = !{!32, !11, i64 8656}
!88 = !{!32, !11, i64 8664}
!89 = !{!32, !11, i64 8632}
!90 = !{!32, !11, i64 8640}
!91 = distinct !{!91, !38}
!92 = distinct !{!92, !38}
!93 = !{!32, !11, i64 8752}
!94 = distinct !{!94, !38}
!95 = !{!32, !11, i64 8736}
!96 = !{!32, !11, i64 8744}
!97 = distinct !{!97, !38}
!98 = distinct !{!98, !38}
!99 = distinct !{!99, !38}
!100 = distinct !{!100, !38}
!101 = !{!102}
!102 = distinct !{!102, !103, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!103 = distinct !{!103, !"_ZL9evaporateR5GroupDv8_d"}
!104 = !{!105, !102}
!105 = distinct !{!105, !106, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!106 = distinct !{!106, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!107 = !{!108, !105, !102}
!108 = distinct !{!108, !109, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x: argument 0"}
!109 = distinct !{!109, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x"}
!110 = distinct !{!110, !38}
!111 = distinct !{!111, !38}
!112 = !{!113}
!113 = distinct !{!113, !114, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!114 = distinct !{!114, !"_ZL7outflowRK5GroupDv8_dS2_"}
!115 = !{!116}
!116 = distinct !{!116, !117, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!117 = distinct !{!117, !"_ZL8condenseR5GroupDv8_d"}
!118 = distinct !{!118, !38}
!119 = !{!120}
!120 = distinct !{!120, !121, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!121 = distinct !{!121, !"_ZL9evaporateR5GroupDv8_d"}
!122 = !{!123, !120}
!123 = distinct !{!123, !124, !"_ZL8flash_ofRK5GroupR5PieceDv8_d: argument 0"}
!124 = distinct !{!124, !"_ZL8flash_ofRK5GroupR5PieceDv8_d"}
!125 = !{!126, !123, !120}
!126 = distinct !{!126, !127, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x: argument 0"}
!127 = distinct !{!127, !"_ZL11look_insideRK5GroupRK5PieceDv8_dDv8_x"}
!128 = distinct !{!128, !38}
!129 = distinct !{!129, !38}
!130 = !{!32, !11, i64 8704}
!131 = distinct !{!131, !38}
!132 = distinct !{!132, !38}
!133 = distinct !{!133, !38}
!134 = !{!135}
!135 = distinct !{!135, !136, !"_ZL11water_afterRK5GroupRK5PieceDv8_d: argument 0"}
!136 = distinct !{!136, !"_ZL11water_afterRK5GroupRK5PieceDv8_d"}
!137 = distinct !{!137, !38}
!138 = distinct !{!138, !38}
!139 = distinct !{!139, !38}
!140 = distinct !{!140, !38}
!141 = distinct !{!141, !38}
!142 = !{!32, !11, i64 8688}
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
!153 = distinct !{!153, !38}
!154 = distinct !{!154, !38}
!155 = distinct !{!155, !38}
!156 = !{!5, !6, i64 56}
!157 = !{!10, !10, i64 0}
!158 = !{!5, !12, i64 176}
!159 = !{!5, !10, i64 168}
!160 = distinct !{!160, !38}
!161 = distinct !{!161, !162}
!162 = !{!"llvm.loop.unroll.disable"}
!163 = distinct !{!163, !38}
!164 = distinct !{!164, !38}
!165 = !{!5, !12, i64 160}
!166 = distinct !{!166, !162}
!167 = !{!5, !10, i64 80}
!168 = !{!5, !12, i64 104}
!169 = distinct !{!169, !38}
!170 = !{!5, !10, i64 72}
!171 = !{!5, !10, i64 96}
!172 = distinct !{!172, !38}
!173 = distinct !{!173, !38}
!174 = distinct !{!174, !162}
!175 = distinct !{!175, !38}
!176 = distinct !{!176, !38}
!177 = distinct !{!177, !38}
!178 = distinct !{!178, !38}
!179 = distinct !{!179, !38}
!180 = distinct !{!180, !38}
!181 = !{!5, !10, i64 88}
!182 = !{!5, !12, i64 112}
!183 = !{!5, !12, i64 120}
!184 = distinct !{!184, !38}
!185 = distinct !{!185, !38}
!186 = distinct !{!186, !38}
