; Made by scripts/lanes.py from sources of sha256 2b7a2d1c8a13c02c42b49640e11f2cf211e83ac4354f9371aba8ea3fe2cec461.
%struct.Piece = type <{ %struct.PieceGiven, [12 x <8 x double>], [12 x <8 x double>], [12 x <8 x double>], <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x i64>, <8 x i64>, <8 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [56 x i8] }>
%struct.PieceGiven = type { <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double>, <8 x double> }

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
  %12 = add i64 %11, 9792
  %13 = mul i64 %12, %10
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %15 = load i64, ptr %14, align 8, !tbaa !15
  %16 = shl i64 %15, 6
  %17 = add i64 %16, 6144
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
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 6016
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 5960
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
  %50 = getelementptr inbounds nuw i8, ptr %46, i64 7552
  store i64 %49, ptr %50, align 64, !tbaa !31
  %51 = getelementptr inbounds nuw i8, ptr %46, i64 7560
  %52 = getelementptr inbounds nuw i8, ptr %46, i64 7568
  %53 = getelementptr inbounds nuw i8, ptr %46, i64 7576
  %54 = getelementptr inbounds nuw i8, ptr %46, i64 7584
  %55 = getelementptr inbounds nuw i8, ptr %46, i64 7592
  %56 = getelementptr inbounds nuw i8, ptr %46, i64 7600
  %57 = getelementptr inbounds nuw i8, ptr %46, i64 7608
  %58 = getelementptr inbounds nuw i8, ptr %46, i64 7616
  %59 = getelementptr inbounds nuw i8, ptr %46, i64 7624
  %60 = getelementptr inbounds nuw i8, ptr %46, i64 7632
  %61 = getelementptr inbounds nuw i8, ptr %46, i64 7640
  %62 = getelementptr inbounds nuw i8, ptr %46, i64 7648
  %63 = getelementptr inbounds nuw i8, ptr %46, i64 7656
  %64 = getelementptr inbounds nuw i8, ptr %46, i64 7664
  store ptr %43, ptr %51, align 8, !tbaa !34
  %65 = getelementptr inbounds <8 x double>, ptr %43, i64 %21
  store ptr %65, ptr %52, align 8, !tbaa !34
  %66 = getelementptr inbounds <8 x double>, ptr %65, i64 %21
  store ptr %66, ptr %53, align 8, !tbaa !34
  %67 = getelementptr inbounds <8 x double>, ptr %66, i64 %21
  store ptr %67, ptr %54, align 8, !tbaa !34
  %68 = getelementptr inbounds <8 x double>, ptr %67, i64 %21
  store ptr %68, ptr %55, align 8, !tbaa !34
  %69 = getelementptr inbounds <8 x double>, ptr %68, i64 %21
  store ptr %69, ptr %56, align 8, !tbaa !34
  %70 = getelementptr inbounds <8 x double>, ptr %69, i64 %21
  store ptr %70, ptr %57, align 8, !tbaa !34
  %71 = getelementptr inbounds <8 x double>, ptr %70, i64 %21
  store ptr %71, ptr %58, align 8, !tbaa !34
  %72 = getelementptr inbounds <8 x double>, ptr %71, i64 %21
  store ptr %72, ptr %59, align 8, !tbaa !34
  %73 = getelementptr inbounds <8 x double>, ptr %72, i64 %21
  store ptr %73, ptr %60, align 8, !tbaa !34
  %74 = getelementptr inbounds <8 x double>, ptr %73, i64 %21
  store ptr %74, ptr %61, align 8, !tbaa !34
  %75 = getelementptr inbounds <8 x double>, ptr %74, i64 %21
  store ptr %75, ptr %62, align 8, !tbaa !34
  %76 = getelementptr inbounds <8 x double>, ptr %75, i64 %21
  store ptr %76, ptr %63, align 8, !tbaa !34
  %77 = getelementptr inbounds <8 x double>, ptr %76, i64 %21
  store ptr %77, ptr %64, align 8, !tbaa !34
  %78 = getelementptr inbounds <8 x double>, ptr %77, i64 %21
  %79 = getelementptr inbounds nuw i8, ptr %46, i64 7672
  store ptr %78, ptr %79, align 8, !tbaa !35
  %80 = icmp eq i64 %49, 0
  %81 = select i1 %80, i64 0, i64 2
  %82 = shl i64 %41, %81
  %83 = getelementptr inbounds <8 x double>, ptr %78, i64 %82
  %84 = getelementptr inbounds nuw i8, ptr %46, i64 7680
  %85 = getelementptr inbounds nuw i8, ptr %46, i64 7688
  %86 = getelementptr inbounds nuw i8, ptr %46, i64 7696
  %87 = getelementptr inbounds nuw i8, ptr %46, i64 7704
  %88 = getelementptr inbounds nuw i8, ptr %46, i64 7712
  %89 = getelementptr inbounds nuw i8, ptr %46, i64 7720
  %90 = getelementptr inbounds nuw i8, ptr %46, i64 7728
  %91 = getelementptr inbounds nuw i8, ptr %46, i64 7736
  %92 = getelementptr inbounds nuw i8, ptr %46, i64 7744
  store ptr %83, ptr %84, align 8, !tbaa !34
  %93 = getelementptr <8 x double>, ptr %83, i64 %24
  %94 = getelementptr i8, ptr %93, i64 64
  store ptr %94, ptr %85, align 8, !tbaa !34
  %95 = getelementptr <8 x double>, ptr %94, i64 %24
  %96 = getelementptr i8, ptr %95, i64 64
  store ptr %96, ptr %86, align 8, !tbaa !34
  %97 = getelementptr <8 x double>, ptr %96, i64 %24
  %98 = getelementptr i8, ptr %97, i64 64
  store ptr %98, ptr %87, align 8, !tbaa !34
  %99 = getelementptr <8 x double>, ptr %98, i64 %24
  %100 = getelementptr i8, ptr %99, i64 64
  store ptr %100, ptr %88, align 8, !tbaa !34
  %101 = getelementptr <8 x double>, ptr %100, i64 %24
  %102 = getelementptr i8, ptr %101, i64 64
  store ptr %102, ptr %89, align 8, !tbaa !34
  %103 = getelementptr <8 x double>, ptr %102, i64 %24
  %104 = getelementptr i8, ptr %103, i64 64
  store ptr %104, ptr %90, align 8, !tbaa !34
  %105 = getelementptr <8 x double>, ptr %104, i64 %24
  %106 = getelementptr i8, ptr %105, i64 64
  store ptr %106, ptr %91, align 8, !tbaa !34
  %107 = getelementptr <8 x double>, ptr %106, i64 %24
  %108 = getelementptr i8, ptr %107, i64 64
  store ptr %108, ptr %92, align 8, !tbaa !34
  %109 = getelementptr <8 x double>, ptr %108, i64 %24
  %110 = getelementptr i8, ptr %109, i64 64
  %111 = add nuw nsw i64 %44, 1
  %112 = icmp eq i64 %111, %17
  br i1 %112, label %113, label %42, !llvm.loop !36

113:                                              ; preds = %42, %15
  %114 = phi ptr [ %37, %15 ], [ %110, %42 ]
  %115 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  store ptr %114, ptr %115, align 64, !tbaa !38
  %116 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %117 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  br label %118

118:                                              ; preds = %113, %128
  %119 = phi i64 [ 0, %113 ], [ %129, %128 ]
  %120 = load i64, ptr %34, align 8, !tbaa !27
  %121 = load i64, ptr %0, align 8, !tbaa !39
  %122 = icmp slt i64 %120, %121
  %123 = trunc nuw nsw i64 %119 to i32
  br i1 %122, label %124, label %125

124:                                              ; preds = %118
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123) #6
  br label %128

125:                                              ; preds = %118
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123, i64 noundef 0) #6
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %123) #6
  %126 = getelementptr inbounds nuw i64, ptr %116, i64 %119
  store i64 0, ptr %126, align 8, !tbaa !30
  %127 = getelementptr inbounds nuw i64, ptr %117, i64 %119
  store i64 0, ptr %127, align 8, !tbaa !30
  br label %128

128:                                              ; preds = %125, %124
  %129 = add nuw nsw i64 %119, 1
  %130 = icmp eq i64 %129, 8
  br i1 %130, label %131, label %118, !llvm.loop !40

131:                                              ; preds = %128, %3
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %135 = load i64, ptr %133, align 8, !tbaa !41
  %136 = load i64, ptr %134, align 8, !tbaa !42
  %137 = sub nsw i64 %135, %136
  %138 = icmp slt i64 %137, 16
  br i1 %138, label %4844, label %139

139:                                              ; preds = %131
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %144 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 5960
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 2344
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %184 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %186 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %187 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %237 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %239 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %240 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %242 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 5896
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 5904
  %276 = getelementptr inbounds nuw i8, ptr %1, i64 5912
  %277 = getelementptr inbounds nuw i8, ptr %1, i64 5920
  %278 = getelementptr inbounds nuw i8, ptr %1, i64 5928
  %279 = getelementptr inbounds nuw i8, ptr %1, i64 5936
  %280 = getelementptr inbounds nuw i8, ptr %1, i64 5944
  br label %281

281:                                              ; preds = %542, %139
  %282 = phi i64 [ 0, %139 ], [ %543, %542 ]
  %283 = phi i1 [ true, %139 ], [ %544, %542 ]
  %284 = getelementptr inbounds nuw i64, ptr %132, i64 %282
  %285 = load i64, ptr %284, align 8, !tbaa !30
  %286 = icmp eq i64 %285, 0
  br i1 %286, label %538, label %287

287:                                              ; preds = %281
  %288 = getelementptr inbounds nuw [8 x double], ptr %140, i64 0, i64 %282
  %289 = load double, ptr %288, align 8, !tbaa !43
  %290 = fcmp oeq double %289, 0.000000e+00
  br i1 %290, label %538, label %291

291:                                              ; preds = %287
  %292 = load i64, ptr %141, align 16, !tbaa !21
  %293 = load i64, ptr %142, align 8, !tbaa !22
  %294 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %282
  %295 = load i64, ptr %294, align 8, !tbaa !30
  %296 = load ptr, ptr %144, align 8, !tbaa !44
  %297 = mul nsw i64 %295, 40
  %298 = getelementptr inbounds i8, ptr %296, i64 %297
  %299 = getelementptr inbounds nuw double, ptr %145, i64 %282
  %300 = load double, ptr %299, align 8, !tbaa !43
  store double %300, ptr %298, align 8, !tbaa !43
  %301 = getelementptr inbounds nuw double, ptr %146, i64 %282
  %302 = load double, ptr %301, align 8, !tbaa !43
  %303 = getelementptr inbounds nuw i8, ptr %298, i64 8
  store double %302, ptr %303, align 8, !tbaa !43
  %304 = getelementptr inbounds nuw double, ptr %147, i64 %282
  %305 = load double, ptr %304, align 8, !tbaa !43
  %306 = getelementptr inbounds nuw i8, ptr %298, i64 16
  store double %305, ptr %306, align 8, !tbaa !43
  %307 = getelementptr inbounds nuw double, ptr %148, i64 %282
  %308 = load double, ptr %307, align 8, !tbaa !43
  %309 = getelementptr inbounds nuw i8, ptr %298, i64 24
  store double %308, ptr %309, align 8, !tbaa !43
  %310 = getelementptr inbounds nuw double, ptr %149, i64 %282
  %311 = load double, ptr %310, align 8, !tbaa !43
  %312 = getelementptr inbounds nuw i8, ptr %298, i64 32
  store double %311, ptr %312, align 8, !tbaa !43
  %313 = load i64, ptr %150, align 64, !tbaa !16
  %314 = icmp sgt i64 %313, 0
  br i1 %314, label %315, label %522

315:                                              ; preds = %291
  %316 = load ptr, ptr %151, align 8, !tbaa !28
  %317 = load ptr, ptr %152, align 8, !tbaa !45
  %318 = mul nsw i64 %313, %295
  %319 = mul i64 %292, 3
  %320 = load ptr, ptr %153, align 8, !tbaa !46
  %321 = icmp sgt i64 %292, 0
  %322 = getelementptr inbounds nuw double, ptr %10, i64 %282
  %323 = shl i64 %292, 4
  %324 = getelementptr inbounds nuw double, ptr %11, i64 %282
  %325 = icmp sgt i64 %293, 0
  %326 = and i64 %293, 1
  %327 = icmp eq i64 %293, 1
  %328 = and i64 %293, 9223372036854775806
  %329 = icmp eq i64 %326, 0
  br label %330

330:                                              ; preds = %430, %315
  %331 = phi i64 [ 0, %315 ], [ %497, %430 ]
  %332 = getelementptr inbounds nuw %struct.Piece, ptr %316, i64 %331
  %333 = getelementptr inbounds nuw i8, ptr %332, i64 1536
  %334 = getelementptr inbounds nuw double, ptr %333, i64 %282
  %335 = load double, ptr %334, align 8, !tbaa !43
  %336 = getelementptr inbounds nuw i8, ptr %332, i64 4352
  %337 = getelementptr inbounds nuw double, ptr %336, i64 %282
  %338 = load double, ptr %337, align 8, !tbaa !43
  %339 = add nsw i64 %331, %318
  %340 = mul i64 %319, %339
  %341 = getelementptr inbounds double, ptr %317, i64 %340
  %342 = mul nsw i64 %339, 40
  %343 = getelementptr inbounds i8, ptr %320, i64 %342
  br i1 %321, label %344, label %361

344:                                              ; preds = %330
  %345 = getelementptr inbounds nuw i8, ptr %332, i64 7568
  %346 = load ptr, ptr %345, align 16, !tbaa !47
  %347 = getelementptr inbounds nuw i8, ptr %332, i64 7600
  %348 = load ptr, ptr %347, align 16, !tbaa !48
  %349 = getelementptr double, ptr %348, i64 %282
  %350 = getelementptr double, ptr %341, i64 %292
  %351 = getelementptr inbounds nuw i8, ptr %332, i64 7656
  %352 = load ptr, ptr %351, align 8, !tbaa !49
  %353 = getelementptr inbounds nuw i8, ptr %332, i64 7552
  %354 = load i64, ptr %353, align 64, !tbaa !31
  %355 = getelementptr inbounds nuw i8, ptr %332, i64 4416
  %356 = getelementptr inbounds nuw i8, ptr %332, i64 384
  %357 = getelementptr inbounds nuw i8, ptr %332, i64 448
  %358 = getelementptr inbounds nuw i8, ptr %332, i64 512
  %359 = getelementptr inbounds nuw i8, ptr %332, i64 640
  %360 = getelementptr i8, ptr %341, i64 %323
  br label %374

361:                                              ; preds = %405, %330
  %362 = phi double [ %338, %330 ], [ %413, %405 ]
  br i1 %325, label %363, label %430

363:                                              ; preds = %361
  %364 = getelementptr inbounds nuw i8, ptr %332, i64 7736
  %365 = load ptr, ptr %364, align 8, !tbaa !50
  %366 = getelementptr double, ptr %365, i64 %282
  %367 = getelementptr inbounds nuw i8, ptr %332, i64 768
  %368 = getelementptr inbounds nuw double, ptr %367, i64 %282
  %369 = load double, ptr %368, align 8, !tbaa !43
  %370 = getelementptr inbounds nuw i8, ptr %332, i64 7688
  %371 = load ptr, ptr %370, align 8, !tbaa !51
  %372 = getelementptr double, ptr %371, i64 %282
  %373 = load double, ptr %366, align 8, !tbaa !43
  br i1 %327, label %416, label %499

374:                                              ; preds = %405, %344
  %375 = phi double [ %338, %344 ], [ %413, %405 ]
  %376 = phi i64 [ 0, %344 ], [ %414, %405 ]
  %377 = getelementptr inbounds nuw <8 x double>, ptr %346, i64 %376
  %378 = getelementptr inbounds nuw double, ptr %377, i64 %282
  %379 = load double, ptr %378, align 8, !tbaa !43
  %380 = getelementptr inbounds nuw double, ptr %341, i64 %376
  store double %379, ptr %380, align 8, !tbaa !43
  %381 = getelementptr <8 x double>, ptr %349, i64 %376
  %382 = load double, ptr %381, align 8, !tbaa !43
  %383 = getelementptr double, ptr %350, i64 %376
  store double %382, ptr %383, align 8, !tbaa !43
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %384 = getelementptr inbounds nuw <8 x double>, ptr %352, i64 %376
  %385 = load <8 x double>, ptr %384, align 64, !tbaa !26
  %386 = icmp slt i64 %376, %354
  br i1 %386, label %387, label %392

387:                                              ; preds = %374
  %388 = load <8 x double>, ptr %333, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %389 = load <8 x double>, ptr %377, align 64, !tbaa !26
  %390 = load <8 x double>, ptr %359, align 64, !tbaa !26
  %391 = fmul <8 x double> %389, %390
  br label %405

392:                                              ; preds = %374
  %393 = load <8 x double>, ptr %355, align 64, !tbaa !26
  %394 = load <8 x double>, ptr %333, align 64, !tbaa !26
  %395 = fsub <8 x double> %393, %394
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %396 = load <8 x double>, ptr %377, align 64, !tbaa !26
  %397 = load <8 x double>, ptr %356, align 64, !tbaa !26
  %398 = load <8 x double>, ptr %357, align 64, !tbaa !26
  %399 = load <8 x double>, ptr %358, align 64, !tbaa !26
  %400 = fmul <8 x double> %396, %399
  %401 = fmul <8 x double> %400, splat (double 0x3FD5555555555555)
  %402 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %398, <8 x double> splat (double 5.000000e-01), <8 x double> %401)
  %403 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %396, <8 x double> %402, <8 x double> %397)
  %404 = fmul <8 x double> %396, %403
  br label %405

405:                                              ; preds = %392, %387
  %406 = phi <8 x double> [ %388, %387 ], [ %395, %392 ]
  %407 = phi <8 x double> [ %391, %387 ], [ %404, %392 ]
  %408 = fmul <8 x double> %385, %406
  store <8 x double> %408, ptr %10, align 64, !tbaa !26
  %409 = fmul <8 x double> %408, %407
  store <8 x double> %409, ptr %11, align 64, !tbaa !26
  %410 = load double, ptr %322, align 8, !tbaa !43
  %411 = getelementptr double, ptr %360, i64 %376
  store double %410, ptr %411, align 8, !tbaa !43
  %412 = load double, ptr %324, align 8, !tbaa !43
  %413 = fadd double %375, %412
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %414 = add nuw nsw i64 %376, 1
  %415 = icmp eq i64 %414, %292
  br i1 %415, label %361, label %374, !llvm.loop !52

416:                                              ; preds = %499, %363
  %417 = phi double [ poison, %363 ], [ %519, %499 ]
  %418 = phi double [ %373, %363 ], [ %514, %499 ]
  %419 = phi double [ %362, %363 ], [ %519, %499 ]
  %420 = phi i64 [ 0, %363 ], [ %512, %499 ]
  br i1 %329, label %430, label %421

421:                                              ; preds = %416
  %422 = getelementptr <8 x double>, ptr %366, i64 %420
  %423 = getelementptr i8, ptr %422, i64 64
  %424 = load double, ptr %423, align 8, !tbaa !43
  %425 = fsub double %424, %418
  %426 = fmul double %369, %425
  %427 = getelementptr <8 x double>, ptr %372, i64 %420
  %428 = load double, ptr %427, align 8, !tbaa !43
  %429 = tail call double @llvm.fmuladd.f64(double %426, double %428, double %419)
  br label %430

430:                                              ; preds = %421, %416, %361
  %431 = phi double [ %362, %361 ], [ %417, %416 ], [ %429, %421 ]
  %432 = getelementptr inbounds nuw i8, ptr %332, i64 960
  %433 = getelementptr inbounds nuw double, ptr %432, i64 %282
  %434 = load double, ptr %433, align 8, !tbaa !43
  %435 = getelementptr inbounds nuw i8, ptr %332, i64 384
  %436 = getelementptr inbounds nuw double, ptr %435, i64 %282
  %437 = load double, ptr %436, align 8, !tbaa !43
  %438 = getelementptr inbounds nuw i8, ptr %332, i64 448
  %439 = getelementptr inbounds nuw double, ptr %438, i64 %282
  %440 = load double, ptr %439, align 8, !tbaa !43
  %441 = getelementptr inbounds nuw i8, ptr %332, i64 512
  %442 = getelementptr inbounds nuw double, ptr %441, i64 %282
  %443 = load double, ptr %442, align 8, !tbaa !43
  %444 = fmul double %434, %443
  %445 = fdiv double %444, 3.000000e+00
  %446 = tail call double @llvm.fmuladd.f64(double %440, double 5.000000e-01, double %445)
  %447 = tail call double @llvm.fmuladd.f64(double %434, double %446, double %437)
  %448 = fmul double %434, %447
  %449 = getelementptr inbounds nuw i8, ptr %332, i64 1408
  %450 = getelementptr inbounds nuw double, ptr %449, i64 %282
  %451 = load double, ptr %450, align 8, !tbaa !43
  %452 = fsub double %451, %335
  %453 = getelementptr inbounds nuw i8, ptr %332, i64 640
  %454 = getelementptr inbounds nuw double, ptr %453, i64 %282
  %455 = load double, ptr %454, align 8, !tbaa !43
  %456 = fmul double %335, %455
  %457 = fmul double %434, %456
  %458 = tail call double @llvm.fmuladd.f64(double %452, double %448, double %457)
  %459 = getelementptr inbounds nuw i8, ptr %332, i64 4096
  %460 = getelementptr inbounds nuw double, ptr %459, i64 %282
  %461 = load double, ptr %460, align 8, !tbaa !43
  %462 = getelementptr inbounds nuw i8, ptr %332, i64 4160
  %463 = getelementptr inbounds nuw double, ptr %462, i64 %282
  %464 = load double, ptr %463, align 8, !tbaa !43
  %465 = fsub double %461, %464
  %466 = fsub double %431, %458
  %467 = fsub double %465, %466
  %468 = fcmp ogt double %461, 0.000000e+00
  %469 = fneg double %461
  %470 = select i1 %468, double %461, double %469
  %471 = fcmp ogt double %464, 0.000000e+00
  %472 = fneg double %464
  %473 = select i1 %471, double %464, double %472
  %474 = fadd double %470, %473
  %475 = fcmp ogt double %467, 0.000000e+00
  %476 = fneg double %467
  %477 = select i1 %475, double %467, double %476
  %478 = fcmp ogt double %474, 1.000000e+00
  %479 = select i1 %478, double %474, double 1.000000e+00
  %480 = fdiv double %477, %479
  store double %480, ptr %343, align 8, !tbaa !43
  %481 = getelementptr inbounds nuw i8, ptr %332, i64 4032
  %482 = getelementptr inbounds nuw double, ptr %481, i64 %282
  %483 = load double, ptr %482, align 8, !tbaa !43
  %484 = getelementptr inbounds nuw i8, ptr %343, i64 8
  store double %483, ptr %484, align 8, !tbaa !43
  %485 = getelementptr inbounds nuw i8, ptr %332, i64 3840
  %486 = getelementptr inbounds nuw double, ptr %485, i64 %282
  %487 = load double, ptr %486, align 8, !tbaa !43
  %488 = getelementptr inbounds nuw i8, ptr %343, i64 16
  store double %487, ptr %488, align 8, !tbaa !43
  %489 = getelementptr inbounds nuw i8, ptr %332, i64 3904
  %490 = getelementptr inbounds nuw double, ptr %489, i64 %282
  %491 = load double, ptr %490, align 8, !tbaa !43
  %492 = getelementptr inbounds nuw i8, ptr %343, i64 24
  store double %491, ptr %492, align 8, !tbaa !43
  %493 = getelementptr inbounds nuw i8, ptr %332, i64 3776
  %494 = getelementptr inbounds nuw double, ptr %493, i64 %282
  %495 = load double, ptr %494, align 8, !tbaa !43
  %496 = getelementptr inbounds nuw i8, ptr %343, i64 32
  store double %495, ptr %496, align 8, !tbaa !43
  %497 = add nuw nsw i64 %331, 1
  %498 = icmp eq i64 %497, %313
  br i1 %498, label %522, label %330, !llvm.loop !53

499:                                              ; preds = %363, %499
  %500 = phi double [ %514, %499 ], [ %373, %363 ]
  %501 = phi double [ %519, %499 ], [ %362, %363 ]
  %502 = phi i64 [ %512, %499 ], [ 0, %363 ]
  %503 = phi i64 [ %520, %499 ], [ 0, %363 ]
  %504 = or disjoint i64 %502, 1
  %505 = getelementptr <8 x double>, ptr %366, i64 %504
  %506 = load double, ptr %505, align 8, !tbaa !43
  %507 = fsub double %506, %500
  %508 = fmul double %369, %507
  %509 = getelementptr <8 x double>, ptr %372, i64 %502
  %510 = load double, ptr %509, align 8, !tbaa !43
  %511 = tail call double @llvm.fmuladd.f64(double %508, double %510, double %501)
  %512 = add nuw nsw i64 %502, 2
  %513 = getelementptr <8 x double>, ptr %366, i64 %512
  %514 = load double, ptr %513, align 8, !tbaa !43
  %515 = fsub double %514, %506
  %516 = fmul double %369, %515
  %517 = getelementptr <8 x double>, ptr %372, i64 %504
  %518 = load double, ptr %517, align 8, !tbaa !43
  %519 = tail call double @llvm.fmuladd.f64(double %516, double %518, double %511)
  %520 = add i64 %503, 2
  %521 = icmp eq i64 %520, %328
  br i1 %521, label %416, label %499, !llvm.loop !54

522:                                              ; preds = %430, %291
  %523 = load i64, ptr %154, align 8, !tbaa !27
  %524 = load i64, ptr %0, align 8, !tbaa !39
  %525 = icmp slt i64 %523, %524
  br i1 %525, label %528, label %526

526:                                              ; preds = %522
  store i64 0, ptr %284, align 8, !tbaa !30
  %527 = getelementptr inbounds nuw i64, ptr %155, i64 %282
  store i64 0, ptr %527, align 8, !tbaa !30
  br label %535

528:                                              ; preds = %522
  %529 = trunc nuw nsw i64 %282 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %529) #6
  %530 = load i64, ptr %284, align 8, !tbaa !30
  %531 = icmp eq i64 %530, 0
  br i1 %531, label %535, label %532

532:                                              ; preds = %528
  %533 = load double, ptr %288, align 8, !tbaa !43
  %534 = fcmp oeq double %533, 0.000000e+00
  br label %535

535:                                              ; preds = %526, %532, %528
  %536 = phi i1 [ true, %528 ], [ %534, %532 ], [ true, %526 ]
  %537 = and i1 %283, %536
  br label %538

538:                                              ; preds = %535, %287, %281
  %539 = phi i1 [ %283, %287 ], [ %537, %535 ], [ %283, %281 ]
  %540 = add nuw nsw i64 %282, 1
  %541 = icmp eq i64 %540, 8
  br i1 %541, label %545, label %542

542:                                              ; preds = %538, %546
  %543 = phi i64 [ %540, %538 ], [ 0, %546 ]
  %544 = phi i1 [ %539, %538 ], [ true, %546 ]
  br label %281, !llvm.loop !55

545:                                              ; preds = %538
  br i1 %539, label %551, label %546

546:                                              ; preds = %4801, %4843, %4840, %3230, %3506, %545
  %547 = load i64, ptr %133, align 8, !tbaa !41
  %548 = load i64, ptr %134, align 8, !tbaa !42
  %549 = sub nsw i64 %547, %548
  %550 = icmp slt i64 %549, 16
  br i1 %550, label %4844, label %542

551:                                              ; preds = %545
  %552 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %553 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %552)
  %554 = icmp eq i64 %553, 0
  br i1 %554, label %4844, label %555

555:                                              ; preds = %551
  %556 = load <8 x i64>, ptr %155, align 64, !tbaa !26
  %557 = and <8 x i64> %556, %552
  %558 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %557)
  %559 = icmp eq i64 %558, 0
  %560 = load i64, ptr %166, align 8, !tbaa !20
  br i1 %559, label %1134, label %561

561:                                              ; preds = %555
  %562 = load <8 x double>, ptr %156, align 64, !tbaa !26
  %563 = load <8 x double>, ptr %157, align 64, !tbaa !26
  %564 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %565 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %566 = fsub <8 x double> %564, %565
  %567 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %563, <8 x double> %566, <8 x double> %562)
  %568 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %569 = fcmp une <8 x double> %568, splat (double 2.000000e+00)
  %570 = select <8 x i1> %569, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %571 = fmul <8 x double> %567, %570
  %572 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %573 = load <8 x double>, ptr %162, align 64, !tbaa !26
  %574 = fcmp olt <8 x double> %572, %573
  %575 = select <8 x i1> %574, <8 x double> %572, <8 x double> %573
  %576 = fcmp olt <8 x double> %575, %571
  %577 = select <8 x i1> %576, <8 x double> %575, <8 x double> %571
  %578 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %579 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %580 = fadd <8 x double> %578, %579
  %581 = fsub <8 x double> %580, %564
  %582 = fmul <8 x double> %577, splat (double 0x3FF000010C6F7A0B)
  %583 = fcmp ole <8 x double> %581, %582
  %584 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %585 = fcmp ogt <8 x double> %584, %577
  %586 = select <8 x i1> %585, <8 x double> %584, <8 x double> %577
  %587 = icmp ne <8 x i64> %557, zeroinitializer
  %588 = select <8 x i1> %583, <8 x i1> %587, <8 x i1> zeroinitializer
  %589 = select <8 x i1> %588, <8 x double> %586, <8 x double> %584
  store <8 x double> %589, ptr %165, align 64, !tbaa !26
  %590 = fmul <8 x double> %577, splat (double 2.000000e+00)
  %591 = fcmp uge <8 x double> %581, %590
  %592 = fmul <8 x double> %581, splat (double 5.000000e-01)
  %593 = select <8 x i1> %591, <8 x double> %577, <8 x double> %592
  %594 = select <8 x i1> %583, <8 x double> %581, <8 x double> %593
  %595 = icmp sgt i64 %560, 0
  %596 = load <8 x double>, ptr %167, align 64, !tbaa !26
  br i1 %595, label %597, label %644

597:                                              ; preds = %561
  %598 = load ptr, ptr %151, align 8, !tbaa !28
  br label %599

599:                                              ; preds = %597, %599
  %600 = phi <8 x double> [ %594, %597 ], [ %641, %599 ]
  %601 = phi i64 [ 0, %597 ], [ %642, %599 ]
  %602 = getelementptr inbounds nuw %struct.Piece, ptr %598, i64 %601
  %603 = getelementptr inbounds nuw i8, ptr %602, i64 3776
  %604 = load <8 x double>, ptr %603, align 64, !tbaa !26
  %605 = getelementptr inbounds nuw i8, ptr %602, i64 1472
  %606 = load <8 x double>, ptr %605, align 64, !tbaa !26
  %607 = fsub <8 x double> %604, %606
  %608 = getelementptr inbounds nuw i8, ptr %602, i64 832
  %609 = load <8 x double>, ptr %608, align 64, !tbaa !26
  %610 = fmul <8 x double> %607, %609
  %611 = getelementptr inbounds nuw i8, ptr %602, i64 1600
  %612 = load <8 x double>, ptr %611, align 64, !tbaa !26
  %613 = getelementptr inbounds nuw i8, ptr %602, i64 4032
  %614 = load <8 x double>, ptr %613, align 64, !tbaa !26
  %615 = fsub <8 x double> %612, %614
  %616 = getelementptr inbounds nuw i8, ptr %602, i64 7360
  %617 = load <8 x i64>, ptr %616, align 64, !tbaa !26
  %618 = getelementptr inbounds nuw i8, ptr %602, i64 7296
  %619 = load <8 x double>, ptr %618, align 64, !tbaa !26
  %620 = fcmp une <8 x double> %619, splat (double 1.000000e+00)
  %621 = select <8 x i1> %620, <8 x double> %610, <8 x double> %615
  %622 = getelementptr inbounds nuw i8, ptr %602, i64 3840
  %623 = load <8 x double>, ptr %622, align 64, !tbaa !26
  %624 = icmp eq <8 x i64> %617, zeroinitializer
  %625 = select <8 x i1> %624, <8 x double> %623, <8 x double> %621
  %626 = getelementptr inbounds nuw i8, ptr %602, i64 5632
  %627 = load <8 x double>, ptr %626, align 64, !tbaa !26
  %628 = getelementptr inbounds nuw i8, ptr %602, i64 7168
  %629 = load <8 x double>, ptr %628, align 64, !tbaa !26
  %630 = fdiv <8 x double> %629, %596
  %631 = select <8 x i1> %624, <8 x double> %630, <8 x double> zeroinitializer
  %632 = fsub <8 x double> %627, %631
  %633 = fcmp ule <8 x double> %625, zeroinitializer
  %634 = fcmp ule <8 x double> %632, zeroinitializer
  %635 = or <8 x i1> %633, %634
  %636 = fdiv <8 x double> %625, %632
  %637 = fcmp ogt <8 x double> %636, splat (double 1.000000e-03)
  %638 = select <8 x i1> %637, <8 x double> %636, <8 x double> splat (double 1.000000e-03)
  %639 = fcmp olt <8 x double> %600, %638
  %640 = select <8 x i1> %635, <8 x i1> splat (i1 true), <8 x i1> %639
  %641 = select <8 x i1> %640, <8 x double> %600, <8 x double> %638
  %642 = add nuw nsw i64 %601, 1
  %643 = icmp eq i64 %642, %560
  br i1 %643, label %644, label %599, !llvm.loop !56

644:                                              ; preds = %599, %561
  %645 = phi <8 x double> [ %594, %561 ], [ %641, %599 ]
  %646 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %647 = icmp eq <8 x i64> %557, zeroinitializer
  %648 = select <8 x i1> %647, <8 x double> %646, <8 x double> %645
  store <8 x double> %648, ptr %168, align 64, !tbaa !26
  %649 = load <8 x i64>, ptr %169, align 64, !tbaa !26
  %650 = fdiv <8 x double> %648, %596
  %651 = fdiv <8 x double> splat (double 1.000000e+00), %648
  %652 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %650, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %653 = fadd <8 x double> %650, splat (double 1.000000e+00)
  %654 = fdiv <8 x double> %652, %653
  %655 = fmul <8 x double> %651, %654
  %656 = icmp eq <8 x i64> %649, zeroinitializer
  %657 = select <8 x i1> %656, <8 x double> %655, <8 x double> %651
  %658 = fneg <8 x double> %651
  %659 = fneg <8 x double> %653
  %660 = fmul <8 x double> %651, %659
  %661 = select <8 x i1> %656, <8 x double> %660, <8 x double> %658
  %662 = fmul <8 x double> %650, %650
  %663 = fdiv <8 x double> %662, %653
  %664 = fmul <8 x double> %651, %663
  %665 = select <8 x i1> %656, <8 x double> %664, <8 x double> zeroinitializer
  %666 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %667 = select <8 x i1> %647, <8 x double> %666, <8 x double> %657
  store <8 x double> %667, ptr %170, align 64, !tbaa !26
  %668 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %669 = select <8 x i1> %647, <8 x double> %668, <8 x double> %661
  store <8 x double> %669, ptr %171, align 64, !tbaa !26
  %670 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %671 = select <8 x i1> %647, <8 x double> %670, <8 x double> %665
  store <8 x double> %671, ptr %172, align 64, !tbaa !26
  %672 = select <8 x i1> %656, <8 x double> %650, <8 x double> zeroinitializer
  %673 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %674 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %675 = fsub <8 x double> %673, %674
  %676 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %672, <8 x double> %675, <8 x double> %673)
  %677 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %678 = select <8 x i1> %647, <8 x double> %677, <8 x double> %676
  %679 = load <8 x double>, ptr %246, align 64, !tbaa !26
  %680 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %681 = fsub <8 x double> %679, %680
  %682 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %672, <8 x double> %681, <8 x double> %679)
  %683 = load <8 x double>, ptr %245, align 64, !tbaa !26
  %684 = select <8 x i1> %647, <8 x double> %683, <8 x double> %682
  store <8 x double> %684, ptr %245, align 64, !tbaa !26
  %685 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %686 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %687 = fsub <8 x double> %685, %686
  %688 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %672, <8 x double> %687, <8 x double> %685)
  %689 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %690 = select <8 x i1> %647, <8 x double> %689, <8 x double> %688
  store <8 x double> %690, ptr %248, align 64, !tbaa !26
  %691 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %692 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %693 = fsub <8 x double> %691, %692
  %694 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %672, <8 x double> %693, <8 x double> %691)
  %695 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %696 = select <8 x i1> %647, <8 x double> %695, <8 x double> %694
  store <8 x double> %696, ptr %251, align 64, !tbaa !26
  %697 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %698 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %699 = fsub <8 x double> %697, %698
  %700 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %672, <8 x double> %699, <8 x double> %697)
  %701 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %702 = select <8 x i1> %647, <8 x double> %701, <8 x double> %700
  store <8 x double> %702, ptr %254, align 64, !tbaa !26
  %703 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %704 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %705 = fsub <8 x double> %703, %704
  %706 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %672, <8 x double> %705, <8 x double> %703)
  %707 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %708 = select <8 x i1> %647, <8 x double> %707, <8 x double> %706
  store <8 x double> %708, ptr %257, align 64, !tbaa !26
  %709 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %710 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %711 = icmp eq <8 x i64> %709, zeroinitializer
  %712 = select <8 x i1> %711, <8 x double> zeroinitializer, <8 x double> %710
  %713 = load <8 x double>, ptr %178, align 64, !tbaa !26
  %714 = fsub <8 x double> %712, %713
  %715 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %716 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %717 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %718 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %717, <8 x double> %673, <8 x double> %716)
  %719 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %720 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %715, <8 x double> %718, <8 x double> %719)
  %721 = fdiv <8 x double> %714, %720
  %722 = and <8 x i64> %649, %557
  %723 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %724 = fcmp une <8 x double> %723, zeroinitializer
  %725 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %726 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %725, <8 x double> %721, <8 x double> %673)
  %727 = icmp eq <8 x i64> %722, zeroinitializer
  %728 = select <8 x i1> %724, <8 x i1> splat (i1 true), <8 x i1> %727
  %729 = select <8 x i1> %728, <8 x double> %678, <8 x double> %726
  store <8 x double> %729, ptr %173, align 64, !tbaa !26
  %730 = load i64, ptr %166, align 8, !tbaa !20
  %731 = icmp sgt i64 %730, 0
  br i1 %731, label %732, label %1044

732:                                              ; preds = %644, %1027
  %733 = phi i64 [ %1028, %1027 ], [ 0, %644 ]
  %734 = load ptr, ptr %151, align 8, !tbaa !28
  %735 = getelementptr inbounds nuw %struct.Piece, ptr %734, i64 %733
  %736 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %737 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %738 = getelementptr inbounds nuw i8, ptr %735, i64 7424
  %739 = load <8 x i64>, ptr %738, align 64, !tbaa !26
  %740 = fdiv <8 x double> %736, %737
  %741 = fdiv <8 x double> splat (double 1.000000e+00), %736
  %742 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %740, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %743 = fadd <8 x double> %740, splat (double 1.000000e+00)
  %744 = fdiv <8 x double> %742, %743
  %745 = fmul <8 x double> %741, %744
  %746 = icmp eq <8 x i64> %739, zeroinitializer
  %747 = select <8 x i1> %746, <8 x double> %745, <8 x double> %741
  %748 = fneg <8 x double> %741
  %749 = fneg <8 x double> %743
  %750 = fmul <8 x double> %741, %749
  %751 = select <8 x i1> %746, <8 x double> %750, <8 x double> %748
  %752 = fmul <8 x double> %740, %740
  %753 = fdiv <8 x double> %752, %743
  %754 = fmul <8 x double> %741, %753
  %755 = select <8 x i1> %746, <8 x double> %754, <8 x double> zeroinitializer
  %756 = getelementptr inbounds nuw i8, ptr %735, i64 5248
  %757 = load <8 x double>, ptr %756, align 64, !tbaa !26
  %758 = select <8 x i1> %647, <8 x double> %757, <8 x double> %747
  store <8 x double> %758, ptr %756, align 64, !tbaa !26
  %759 = getelementptr inbounds nuw i8, ptr %735, i64 5312
  %760 = load <8 x double>, ptr %759, align 64, !tbaa !26
  %761 = select <8 x i1> %647, <8 x double> %760, <8 x double> %751
  store <8 x double> %761, ptr %759, align 64, !tbaa !26
  %762 = getelementptr inbounds nuw i8, ptr %735, i64 5376
  %763 = load <8 x double>, ptr %762, align 64, !tbaa !26
  %764 = select <8 x i1> %647, <8 x double> %763, <8 x double> %755
  store <8 x double> %764, ptr %762, align 64, !tbaa !26
  %765 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %766 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %767 = fdiv <8 x double> %765, %766
  %768 = select <8 x i1> %746, <8 x double> %767, <8 x double> zeroinitializer
  %769 = getelementptr inbounds nuw i8, ptr %735, i64 2944
  %770 = getelementptr inbounds nuw i8, ptr %735, i64 3712
  %771 = getelementptr inbounds nuw i8, ptr %735, i64 4480
  br label %1031

772:                                              ; preds = %1031
  %773 = load <8 x double>, ptr %769, align 64, !tbaa !26
  %774 = load <8 x double>, ptr %770, align 64, !tbaa !26
  %775 = fcmp olt <8 x double> %773, %774
  %776 = select <8 x i1> %775, <8 x double> %773, <8 x double> %774
  %777 = load <8 x double>, ptr %735, align 64, !tbaa !26
  %778 = fmul <8 x double> %777, splat (double 3.000000e-01)
  %779 = fcmp ogt <8 x double> %776, %778
  %780 = select <8 x i1> %779, <8 x double> %776, <8 x double> %778
  %781 = select <8 x i1> %647, <8 x double> %773, <8 x double> %780
  store <8 x double> %781, ptr %769, align 64, !tbaa !26
  %782 = getelementptr inbounds nuw i8, ptr %735, i64 5632
  %783 = getelementptr inbounds nuw i8, ptr %735, i64 3456
  %784 = load <8 x double>, ptr %783, align 64, !tbaa !26
  %785 = fcmp ogt <8 x double> %784, zeroinitializer
  %786 = select <8 x i1> %785, <8 x double> %784, <8 x double> zeroinitializer
  %787 = load <8 x double>, ptr %782, align 64, !tbaa !26
  %788 = select <8 x i1> %647, <8 x double> %787, <8 x double> %786
  store <8 x double> %788, ptr %782, align 64, !tbaa !26
  %789 = getelementptr inbounds nuw i8, ptr %735, i64 384
  %790 = load <8 x double>, ptr %789, align 64, !tbaa !26
  %791 = getelementptr inbounds nuw i8, ptr %735, i64 448
  %792 = load <8 x double>, ptr %791, align 64, !tbaa !26
  %793 = getelementptr inbounds nuw i8, ptr %735, i64 512
  %794 = load <8 x double>, ptr %793, align 64, !tbaa !26
  %795 = getelementptr inbounds nuw i8, ptr %735, i64 640
  %796 = load <8 x double>, ptr %795, align 64, !tbaa !26
  %797 = getelementptr inbounds nuw i8, ptr %735, i64 768
  %798 = load <8 x double>, ptr %797, align 64, !tbaa !26
  %799 = getelementptr inbounds nuw i8, ptr %735, i64 832
  %800 = getelementptr inbounds nuw i8, ptr %735, i64 1536
  %801 = load <8 x double>, ptr %800, align 64, !tbaa !26
  %802 = getelementptr inbounds nuw i8, ptr %735, i64 4416
  %803 = load <8 x double>, ptr %802, align 64, !tbaa !26
  %804 = fsub <8 x double> %803, %801
  %805 = getelementptr inbounds nuw i8, ptr %735, i64 5184
  %806 = load <8 x double>, ptr %805, align 64, !tbaa !26
  %807 = fsub <8 x double> %806, %801
  %808 = load <8 x double>, ptr %759, align 64, !tbaa !26
  %809 = load <8 x double>, ptr %762, align 64, !tbaa !26
  %810 = fmul <8 x double> %804, %808
  %811 = fmul <8 x double> %807, %809
  %812 = fmul <8 x double> %801, %808
  %813 = fmul <8 x double> %796, %812
  %814 = fmul <8 x double> %801, %809
  %815 = fmul <8 x double> %796, %814
  %816 = getelementptr inbounds nuw i8, ptr %735, i64 7568
  %817 = load ptr, ptr %816, align 16, !tbaa !47
  %818 = getelementptr inbounds nuw i8, ptr %735, i64 7576
  %819 = load ptr, ptr %818, align 8, !tbaa !57
  %820 = getelementptr inbounds nuw i8, ptr %735, i64 7656
  %821 = load ptr, ptr %820, align 8, !tbaa !49
  %822 = getelementptr inbounds nuw i8, ptr %735, i64 7560
  %823 = load ptr, ptr %822, align 8, !tbaa !58
  %824 = getelementptr inbounds nuw i8, ptr %735, i64 7584
  %825 = load ptr, ptr %824, align 32, !tbaa !59
  %826 = load i64, ptr %141, align 16, !tbaa !21
  %827 = icmp sgt i64 %826, 0
  br i1 %827, label %828, label %830

828:                                              ; preds = %772
  %829 = getelementptr inbounds nuw i8, ptr %735, i64 7552
  br label %843

830:                                              ; preds = %874, %772
  %831 = fmul <8 x double> %798, %808
  %832 = fmul <8 x double> %798, %809
  %833 = getelementptr inbounds nuw i8, ptr %735, i64 7736
  %834 = load ptr, ptr %833, align 8, !tbaa !50
  %835 = getelementptr inbounds nuw i8, ptr %735, i64 7744
  %836 = load ptr, ptr %835, align 64, !tbaa !60
  %837 = load i64, ptr %142, align 8, !tbaa !22
  %838 = icmp sgt i64 %837, 0
  br i1 %838, label %839, label %908

839:                                              ; preds = %830
  %840 = getelementptr inbounds nuw i8, ptr %735, i64 7688
  %841 = getelementptr inbounds nuw i8, ptr %735, i64 7696
  %842 = getelementptr inbounds nuw i8, ptr %735, i64 7704
  br label %881

843:                                              ; preds = %828, %874
  %844 = phi i64 [ 0, %828 ], [ %878, %874 ]
  %845 = getelementptr inbounds nuw <8 x double>, ptr %817, i64 %844
  %846 = load <8 x double>, ptr %845, align 64, !tbaa !26
  %847 = getelementptr inbounds nuw <8 x double>, ptr %819, i64 %844
  %848 = load <8 x double>, ptr %847, align 64, !tbaa !26
  %849 = fsub <8 x double> %846, %848
  %850 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %768, <8 x double> %849, <8 x double> %846)
  %851 = getelementptr inbounds nuw <8 x double>, ptr %823, i64 %844
  %852 = load <8 x double>, ptr %851, align 64, !tbaa !26
  %853 = select <8 x i1> %647, <8 x double> %852, <8 x double> %850
  store <8 x double> %853, ptr %851, align 64, !tbaa !26
  %854 = load i64, ptr %829, align 64, !tbaa !31
  %855 = icmp slt i64 %844, %854
  %856 = getelementptr inbounds nuw <8 x double>, ptr %821, i64 %844
  %857 = load <8 x double>, ptr %856, align 64, !tbaa !26
  br i1 %855, label %858, label %861

858:                                              ; preds = %843
  %859 = fmul <8 x double> %815, %848
  %860 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %813, <8 x double> %846, <8 x double> %859)
  br label %874

861:                                              ; preds = %843
  %862 = fmul <8 x double> %794, %846
  %863 = fmul <8 x double> %862, splat (double 0x3FD5555555555555)
  %864 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %792, <8 x double> splat (double 5.000000e-01), <8 x double> %863)
  %865 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %846, <8 x double> %864, <8 x double> %790)
  %866 = fmul <8 x double> %846, %865
  %867 = fmul <8 x double> %794, %848
  %868 = fmul <8 x double> %867, splat (double 0x3FD5555555555555)
  %869 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %792, <8 x double> splat (double 5.000000e-01), <8 x double> %868)
  %870 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %848, <8 x double> %869, <8 x double> %790)
  %871 = fmul <8 x double> %848, %870
  %872 = fmul <8 x double> %811, %871
  %873 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %810, <8 x double> %866, <8 x double> %872)
  br label %874

874:                                              ; preds = %861, %858
  %875 = phi <8 x double> [ %873, %861 ], [ %860, %858 ]
  %876 = fmul <8 x double> %875, %857
  %877 = getelementptr inbounds nuw <8 x double>, ptr %825, i64 %844
  store <8 x double> %876, ptr %877, align 64, !tbaa !26
  %878 = add nuw nsw i64 %844, 1
  %879 = load i64, ptr %141, align 16, !tbaa !21
  %880 = icmp slt i64 %878, %879
  br i1 %880, label %843, label %830, !llvm.loop !61

881:                                              ; preds = %839, %881
  %882 = phi i64 [ 0, %839 ], [ %883, %881 ]
  %883 = add nuw nsw i64 %882, 1
  %884 = getelementptr inbounds nuw <8 x double>, ptr %834, i64 %883
  %885 = load <8 x double>, ptr %884, align 64, !tbaa !26
  %886 = getelementptr inbounds nuw <8 x double>, ptr %834, i64 %882
  %887 = load <8 x double>, ptr %886, align 64, !tbaa !26
  %888 = fsub <8 x double> %885, %887
  %889 = load ptr, ptr %840, align 8, !tbaa !51
  %890 = getelementptr inbounds nuw <8 x double>, ptr %889, i64 %882
  %891 = load <8 x double>, ptr %890, align 64, !tbaa !26
  %892 = fmul <8 x double> %888, %891
  %893 = getelementptr inbounds nuw <8 x double>, ptr %836, i64 %883
  %894 = load <8 x double>, ptr %893, align 64, !tbaa !26
  %895 = getelementptr inbounds nuw <8 x double>, ptr %836, i64 %882
  %896 = load <8 x double>, ptr %895, align 64, !tbaa !26
  %897 = fsub <8 x double> %894, %896
  %898 = load ptr, ptr %841, align 16, !tbaa !62
  %899 = getelementptr inbounds nuw <8 x double>, ptr %898, i64 %882
  %900 = load <8 x double>, ptr %899, align 64, !tbaa !26
  %901 = fmul <8 x double> %897, %900
  %902 = fmul <8 x double> %832, %901
  %903 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %831, <8 x double> %892, <8 x double> %902)
  %904 = load ptr, ptr %842, align 8, !tbaa !63
  %905 = getelementptr inbounds nuw <8 x double>, ptr %904, i64 %882
  store <8 x double> %903, ptr %905, align 64, !tbaa !26
  %906 = load i64, ptr %142, align 8, !tbaa !22
  %907 = icmp slt i64 %883, %906
  br i1 %907, label %881, label %908, !llvm.loop !64

908:                                              ; preds = %881, %830
  %909 = getelementptr inbounds nuw i8, ptr %735, i64 1664
  %910 = load <8 x double>, ptr %909, align 64, !tbaa !26
  %911 = fcmp ogt <8 x double> %910, zeroinitializer
  %912 = bitcast <8 x i1> %911 to i8
  %913 = icmp eq i8 %912, 0
  br i1 %913, label %914, label %918

914:                                              ; preds = %908
  %915 = getelementptr inbounds nuw i8, ptr %735, i64 7168
  %916 = load <8 x double>, ptr %915, align 64, !tbaa !26
  %917 = select <8 x i1> %647, <8 x double> %916, <8 x double> zeroinitializer
  store <8 x double> %917, ptr %915, align 64, !tbaa !26
  br label %1027

918:                                              ; preds = %908
  %919 = load <8 x double>, ptr %800, align 64, !tbaa !26
  %920 = getelementptr inbounds nuw i8, ptr %735, i64 1728
  %921 = load <8 x double>, ptr %920, align 64, !tbaa !26
  %922 = getelementptr inbounds nuw i8, ptr %735, i64 1856
  %923 = load <8 x double>, ptr %922, align 64, !tbaa !26
  %924 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %925 = fneg <8 x double> %924
  %926 = fdiv <8 x double> %925, %921
  %927 = fcmp ogt <8 x double> %926, splat (double -7.000000e+02)
  %928 = select <8 x i1> %927, <8 x double> %926, <8 x double> splat (double -7.000000e+02)
  %929 = fcmp olt <8 x double> %928, splat (double 7.000000e+02)
  %930 = select <8 x i1> %929, <8 x double> %928, <8 x double> splat (double 7.000000e+02)
  %931 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %930, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %932 = fadd <8 x double> %931, splat (double 0xC338000000000000)
  %933 = fneg <8 x double> %932
  %934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %933, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %930)
  %935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %933, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %934)
  %936 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %935, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %936, <8 x double> %935, <8 x double> splat (double 0x3E5AE64567F544E4))
  %938 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %937, <8 x double> %935, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %939 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %938, <8 x double> %935, <8 x double> splat (double 0x3EC71DE3A556C734))
  %940 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %939, <8 x double> %935, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %941 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %940, <8 x double> %935, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %942 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %941, <8 x double> %935, <8 x double> splat (double 0x3F56C16C16C16C17))
  %943 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %942, <8 x double> %935, <8 x double> splat (double 0x3F81111111111111))
  %944 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %943, <8 x double> %935, <8 x double> splat (double 0x3FA5555555555555))
  %945 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %944, <8 x double> %935, <8 x double> splat (double 0x3FC5555555555555))
  %946 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %945, <8 x double> %935, <8 x double> splat (double 5.000000e-01))
  %947 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %946, <8 x double> %935, <8 x double> splat (double 1.000000e+00))
  %948 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %947, <8 x double> %935, <8 x double> splat (double 1.000000e+00))
  %949 = bitcast <8 x double> %931 to <8 x i64>
  %950 = shl <8 x i64> %949, splat (i64 52)
  %951 = bitcast <8 x double> %948 to <8 x i64>
  %952 = add <8 x i64> %950, %951
  %953 = bitcast <8 x i64> %952 to <8 x double>
  %954 = fsub <8 x double> splat (double 1.000000e+00), %953
  %955 = load <8 x double>, ptr %802, align 64, !tbaa !26
  %956 = fsub <8 x double> %955, %919
  %957 = load ptr, ptr %822, align 8, !tbaa !58
  %958 = load ptr, ptr %816, align 16, !tbaa !47
  %959 = getelementptr inbounds nuw i8, ptr %735, i64 7600
  %960 = load ptr, ptr %959, align 16, !tbaa !48
  %961 = load ptr, ptr %820, align 8, !tbaa !49
  %962 = getelementptr inbounds nuw i8, ptr %735, i64 7592
  %963 = load ptr, ptr %962, align 8, !tbaa !65
  %964 = getelementptr inbounds nuw i8, ptr %735, i64 7552
  %965 = load i64, ptr %964, align 64, !tbaa !31
  %966 = load i64, ptr %141, align 16, !tbaa !21
  %967 = icmp slt i64 %965, %966
  br i1 %967, label %968, label %972

968:                                              ; preds = %918
  %969 = getelementptr inbounds nuw i8, ptr %735, i64 1792
  %970 = load <8 x double>, ptr %969, align 64, !tbaa !26
  %971 = fneg <8 x double> %970
  br label %984

972:                                              ; preds = %984, %918
  %973 = phi <8 x double> [ zeroinitializer, %918 ], [ %1015, %984 ]
  %974 = phi <8 x double> [ zeroinitializer, %918 ], [ %1023, %984 ]
  %975 = getelementptr inbounds nuw i8, ptr %735, i64 3776
  %976 = load <8 x double>, ptr %975, align 64, !tbaa !26
  %977 = fsub <8 x double> %976, %955
  %978 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %973, <8 x double> %977, <8 x double> %974)
  %979 = getelementptr inbounds nuw i8, ptr %735, i64 7168
  %980 = load <8 x double>, ptr %799, align 64, !tbaa !26
  %981 = fmul <8 x double> %980, %978
  %982 = load <8 x double>, ptr %979, align 64, !tbaa !26
  %983 = select <8 x i1> %647, <8 x double> %982, <8 x double> %981
  store <8 x double> %983, ptr %979, align 64, !tbaa !26
  br label %1027

984:                                              ; preds = %968, %984
  %985 = phi <8 x double> [ zeroinitializer, %968 ], [ %1023, %984 ]
  %986 = phi i64 [ %965, %968 ], [ %1024, %984 ]
  %987 = getelementptr inbounds <8 x double>, ptr %958, i64 %986
  %988 = load <8 x double>, ptr %987, align 64, !tbaa !26
  %989 = getelementptr inbounds <8 x double>, ptr %957, i64 %986
  %990 = load <8 x double>, ptr %989, align 64, !tbaa !26
  %991 = fadd <8 x double> %988, %990
  %992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %991, <8 x double> splat (double 5.000000e-01), <8 x double> %971)
  %993 = fmul <8 x double> %923, %992
  %994 = fcmp ogt <8 x double> %993, splat (double -5.000000e+00)
  %995 = select <8 x i1> %994, <8 x double> %993, <8 x double> splat (double -5.000000e+00)
  %996 = fcmp olt <8 x double> %995, splat (double 5.000000e+00)
  %997 = select <8 x i1> %996, <8 x double> %995, <8 x double> splat (double 5.000000e+00)
  %998 = fmul <8 x double> %997, %997
  %999 = fadd <8 x double> %998, splat (double 3.780000e+02)
  %1000 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %998, <8 x double> %999, <8 x double> splat (double 1.732500e+04))
  %1001 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %998, <8 x double> %1000, <8 x double> splat (double 1.351350e+05))
  %1002 = fmul <8 x double> %997, %1001
  %1003 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %998, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1004 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %998, <8 x double> %1003, <8 x double> splat (double 6.237000e+04))
  %1005 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %998, <8 x double> %1004, <8 x double> splat (double 1.351350e+05))
  %1006 = fdiv <8 x double> %1002, %1005
  %1007 = fadd <8 x double> %1006, splat (double 1.000000e+00)
  %1008 = fmul <8 x double> %910, %1007
  %1009 = getelementptr inbounds <8 x double>, ptr %960, i64 %986
  %1010 = load <8 x double>, ptr %1009, align 64, !tbaa !26
  %1011 = fadd <8 x double> %1010, splat (double -1.000000e+00)
  %1012 = fadd <8 x double> %1011, %1008
  %1013 = fcmp ogt <8 x double> %1012, zeroinitializer
  %1014 = select <8 x i1> %1013, <8 x double> %1012, <8 x double> zeroinitializer
  %1015 = fmul <8 x double> %954, %1014
  %1016 = fsub <8 x double> %1010, %1015
  %1017 = getelementptr inbounds <8 x double>, ptr %963, i64 %986
  %1018 = load <8 x double>, ptr %1017, align 64, !tbaa !26
  %1019 = select <8 x i1> %647, <8 x double> %1018, <8 x double> %1016
  store <8 x double> %1019, ptr %1017, align 64, !tbaa !26
  %1020 = getelementptr inbounds <8 x double>, ptr %961, i64 %986
  %1021 = load <8 x double>, ptr %1020, align 64, !tbaa !26
  %1022 = fmul <8 x double> %956, %1021
  %1023 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1015, <8 x double> %1022, <8 x double> %985)
  %1024 = add nsw i64 %986, 1
  %1025 = load i64, ptr %141, align 16, !tbaa !21
  %1026 = icmp slt i64 %1024, %1025
  br i1 %1026, label %984, label %972, !llvm.loop !66

1027:                                             ; preds = %914, %972
  %1028 = add nuw nsw i64 %733, 1
  %1029 = load i64, ptr %166, align 8, !tbaa !20
  %1030 = icmp slt i64 %1028, %1029
  br i1 %1030, label %732, label %1044, !llvm.loop !67

1031:                                             ; preds = %732, %1031
  %1032 = phi i64 [ 0, %732 ], [ %1042, %1031 ]
  %1033 = getelementptr inbounds nuw [12 x <8 x double>], ptr %769, i64 0, i64 %1032
  %1034 = getelementptr inbounds nuw [12 x <8 x double>], ptr %770, i64 0, i64 %1032
  %1035 = load <8 x double>, ptr %1034, align 64, !tbaa !26
  %1036 = getelementptr inbounds nuw [12 x <8 x double>], ptr %771, i64 0, i64 %1032
  %1037 = load <8 x double>, ptr %1036, align 64, !tbaa !26
  %1038 = fsub <8 x double> %1035, %1037
  %1039 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %768, <8 x double> %1038, <8 x double> %1035)
  %1040 = load <8 x double>, ptr %1033, align 64, !tbaa !26
  %1041 = select <8 x i1> %647, <8 x double> %1040, <8 x double> %1039
  store <8 x double> %1041, ptr %1033, align 64, !tbaa !26
  %1042 = add nuw nsw i64 %1032, 1
  %1043 = icmp eq i64 %1042, 11
  br i1 %1043, label %772, label %1031, !llvm.loop !68

1044:                                             ; preds = %1027, %644
  %1045 = phi i64 [ %730, %644 ], [ %1029, %1027 ]
  %1046 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %1047 = fcmp ogt <8 x double> %1046, zeroinitializer
  %1048 = select <8 x i1> %1047, <8 x i64> %557, <8 x i64> zeroinitializer
  %1049 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1048)
  %1050 = icmp eq i64 %1049, 0
  br i1 %1050, label %1134, label %1051

1051:                                             ; preds = %1044
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1048, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1052 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %1053 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %1054 = fadd <8 x double> %1052, %1053
  store <8 x double> %1054, ptr %9, align 64, !tbaa !26
  %1055 = load ptr, ptr %184, align 8
  %1056 = load ptr, ptr %186, align 8
  %1057 = load ptr, ptr %187, align 8
  br label %1058

1058:                                             ; preds = %1126, %1051
  %1059 = phi i64 [ 0, %1051 ], [ %1127, %1126 ]
  %1060 = getelementptr inbounds nuw i64, ptr %7, i64 %1059
  %1061 = load i64, ptr %1060, align 8, !tbaa !30
  %1062 = icmp eq i64 %1061, 0
  br i1 %1062, label %1126, label %1063

1063:                                             ; preds = %1058
  %1064 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %1059
  %1065 = load i64, ptr %1064, align 8, !tbaa !30
  %1066 = shl nsw i64 %1065, 1
  %1067 = getelementptr inbounds i64, ptr %1055, i64 %1066
  %1068 = load i64, ptr %1067, align 8, !tbaa !30
  %1069 = shl nuw nsw i64 %1059, 1
  %1070 = getelementptr inbounds nuw [16 x i64], ptr %185, i64 0, i64 %1069
  %1071 = getelementptr inbounds i64, ptr %1057, i64 %1066
  %1072 = load i64, ptr %1071, align 8, !tbaa !30
  %1073 = shl nsw i64 %1072, 4
  %1074 = getelementptr inbounds i8, ptr %1056, i64 %1073
  %1075 = getelementptr inbounds nuw double, ptr %9, i64 %1059
  %1076 = load double, ptr %1075, align 8, !tbaa !43
  %1077 = load i64, ptr %1070, align 8, !tbaa !30
  %1078 = getelementptr i8, ptr %1074, i64 -16
  %1079 = icmp sgt i64 %1077, 0
  br i1 %1079, label %1080, label %1089

1080:                                             ; preds = %1063, %1086
  %1081 = phi i64 [ %1087, %1086 ], [ %1077, %1063 ]
  %1082 = shl i64 %1081, 4
  %1083 = getelementptr i8, ptr %1078, i64 %1082
  %1084 = load double, ptr %1083, align 8, !tbaa !43
  %1085 = fcmp ugt double %1076, %1084
  br i1 %1085, label %1089, label %1086

1086:                                             ; preds = %1080
  %1087 = add nsw i64 %1081, -1
  store i64 %1087, ptr %1070, align 8, !tbaa !30
  %1088 = icmp sgt i64 %1081, 1
  br i1 %1088, label %1080, label %1089, !llvm.loop !69

1089:                                             ; preds = %1086, %1080, %1063
  %1090 = phi i64 [ %1077, %1063 ], [ 0, %1086 ], [ %1081, %1080 ]
  %1091 = icmp slt i64 %1090, %1068
  br i1 %1091, label %1092, label %1101

1092:                                             ; preds = %1089, %1098
  %1093 = phi i64 [ %1099, %1098 ], [ %1090, %1089 ]
  %1094 = shl nsw i64 %1093, 4
  %1095 = getelementptr inbounds i8, ptr %1074, i64 %1094
  %1096 = load double, ptr %1095, align 8, !tbaa !43
  %1097 = fcmp ule double %1076, %1096
  br i1 %1097, label %1106, label %1098

1098:                                             ; preds = %1092
  %1099 = add i64 %1093, 1
  store i64 %1099, ptr %1070, align 8, !tbaa !30
  %1100 = icmp eq i64 %1099, %1068
  br i1 %1100, label %1101, label %1092, !llvm.loop !70

1101:                                             ; preds = %1098, %1089
  %1102 = shl i64 %1068, 4
  %1103 = getelementptr i8, ptr %1074, i64 %1102
  %1104 = getelementptr i8, ptr %1103, i64 -8
  %1105 = load double, ptr %1104, align 8, !tbaa !43
  br label %1123

1106:                                             ; preds = %1092
  %1107 = shl nsw i64 %1093, 1
  %1108 = or disjoint i64 %1107, 1
  %1109 = getelementptr inbounds double, ptr %1074, i64 %1108
  %1110 = load double, ptr %1109, align 8, !tbaa !43
  %1111 = icmp sgt i64 %1093, 0
  br i1 %1111, label %1112, label %1123

1112:                                             ; preds = %1106
  %1113 = getelementptr inbounds nuw i8, ptr %1074, i64 %1094
  %1114 = getelementptr i8, ptr %1113, i64 -8
  %1115 = load double, ptr %1114, align 8, !tbaa !43
  %1116 = getelementptr i8, ptr %1113, i64 -16
  %1117 = load double, ptr %1116, align 8, !tbaa !43
  %1118 = fsub double %1076, %1117
  %1119 = fsub double %1096, %1117
  %1120 = fdiv double %1118, %1119
  %1121 = fsub double %1110, %1115
  %1122 = tail call double @llvm.fmuladd.f64(double %1120, double %1121, double %1115)
  br label %1123

1123:                                             ; preds = %1112, %1106, %1101
  %1124 = phi double [ %1122, %1112 ], [ %1110, %1106 ], [ %1105, %1101 ]
  %1125 = getelementptr inbounds nuw double, ptr %8, i64 %1059
  store double %1124, ptr %1125, align 8, !tbaa !43
  br label %1126

1126:                                             ; preds = %1123, %1058
  %1127 = add nuw nsw i64 %1059, 1
  %1128 = icmp eq i64 %1127, 8
  br i1 %1128, label %1129, label %1058, !llvm.loop !71

1129:                                             ; preds = %1126
  %1130 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1131 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %1132 = icmp eq <8 x i64> %1048, zeroinitializer
  %1133 = select <8 x i1> %1132, <8 x double> %1131, <8 x double> %1130
  store <8 x double> %1133, ptr %173, align 64, !tbaa !26
  br label %1134

1134:                                             ; preds = %1044, %1129, %555
  %1135 = phi i64 [ %1045, %1044 ], [ %1045, %1129 ], [ %560, %555 ]
  %1136 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %1137 = icmp eq <8 x i64> %557, zeroinitializer
  %1138 = select <8 x i1> %1137, <8 x double> %1136, <8 x double> zeroinitializer
  store <8 x double> %1138, ptr %188, align 64, !tbaa !26
  %1139 = icmp sgt i64 %1135, 0
  br i1 %1139, label %1145, label %1140

1140:                                             ; preds = %1134
  %1141 = load <8 x double>, ptr %192, align 64, !tbaa !26
  br label %1850

1142:                                             ; preds = %1844
  %1143 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %1144 = icmp sgt i64 %1848, 0
  br i1 %1144, label %1856, label %1850

1145:                                             ; preds = %1134, %1844
  %1146 = phi i64 [ %1847, %1844 ], [ 0, %1134 ]
  %1147 = load ptr, ptr %151, align 8, !tbaa !28
  %1148 = getelementptr inbounds nuw %struct.Piece, ptr %1147, i64 %1146
  %1149 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %1150 = getelementptr inbounds nuw i8, ptr %1148, i64 6400
  %1151 = load <8 x double>, ptr %1150, align 64, !tbaa !26
  %1152 = fsub <8 x double> %1149, %1151
  %1153 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1152)
  %1154 = getelementptr inbounds nuw i8, ptr %1148, i64 2176
  %1155 = load <8 x double>, ptr %1154, align 64, !tbaa !26
  %1156 = fcmp ogt <8 x double> %1155, splat (double 1.000000e-09)
  %1157 = select <8 x i1> %1156, <8 x double> %1155, <8 x double> splat (double 1.000000e-09)
  %1158 = fdiv <8 x double> %1153, %1157
  %1159 = getelementptr inbounds nuw i8, ptr %1148, i64 1024
  %1160 = load <8 x double>, ptr %1159, align 64, !tbaa !26
  %1161 = fcmp ule <8 x double> %1155, zeroinitializer
  %1162 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1158)
  %1163 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1162)
  %1164 = select <8 x i1> %1161, <8 x double> splat (double 1.000000e+00), <8 x double> %1163
  %1165 = fmul <8 x double> %1160, %1164
  %1166 = getelementptr inbounds nuw i8, ptr %1148, i64 1088
  %1167 = load <8 x double>, ptr %1166, align 64, !tbaa !26
  %1168 = getelementptr inbounds nuw i8, ptr %1148, i64 5632
  %1169 = load <8 x double>, ptr %1168, align 64, !tbaa !26
  %1170 = getelementptr inbounds nuw i8, ptr %1148, i64 5696
  %1171 = load <8 x double>, ptr %1170, align 64, !tbaa !26
  %1172 = fadd <8 x double> %1169, %1171
  %1173 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1167, <8 x double> %1172, <8 x double> %1165)
  %1174 = getelementptr inbounds nuw i8, ptr %1148, i64 1152
  %1175 = load <8 x double>, ptr %1174, align 64, !tbaa !26
  %1176 = fcmp olt <8 x double> %1173, %1175
  %1177 = select <8 x i1> %1176, <8 x double> %1173, <8 x double> %1175
  %1178 = getelementptr inbounds nuw i8, ptr %1148, i64 5312
  %1179 = load <8 x double>, ptr %1178, align 64, !tbaa !26
  %1180 = getelementptr inbounds nuw i8, ptr %1148, i64 3968
  %1181 = load <8 x double>, ptr %1180, align 64, !tbaa !26
  %1182 = getelementptr inbounds nuw i8, ptr %1148, i64 5376
  %1183 = load <8 x double>, ptr %1182, align 64, !tbaa !26
  %1184 = getelementptr inbounds nuw i8, ptr %1148, i64 4736
  %1185 = load <8 x double>, ptr %1184, align 64, !tbaa !26
  %1186 = fmul <8 x double> %1183, %1185
  %1187 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1179, <8 x double> %1181, <8 x double> %1186)
  %1188 = getelementptr inbounds nuw i8, ptr %1148, i64 1216
  %1189 = load <8 x double>, ptr %1188, align 64, !tbaa !26
  %1190 = fneg <8 x double> %1189
  %1191 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1190, <8 x double> %1187, <8 x double> %1177)
  %1192 = getelementptr inbounds nuw i8, ptr %1148, i64 5248
  %1193 = load <8 x double>, ptr %1192, align 64, !tbaa !26
  %1194 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1189, <8 x double> %1193, <8 x double> splat (double 1.000000e+00))
  %1195 = fdiv <8 x double> %1191, %1194
  %1196 = getelementptr inbounds nuw i8, ptr %1148, i64 7488
  %1197 = load <8 x i64>, ptr %1196, align 64, !tbaa !26
  %1198 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %1199 = icmp eq <8 x i64> %1197, zeroinitializer
  %1200 = select <8 x i1> %1199, <8 x double> %1149, <8 x double> %1198
  %1201 = getelementptr inbounds nuw i8, ptr %1148, i64 5504
  store <8 x double> %1200, ptr %1201, align 64, !tbaa !26
  %1202 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %1203 = select <8 x i1> %1199, <8 x double> %1195, <8 x double> %1202
  %1204 = getelementptr inbounds nuw i8, ptr %1148, i64 3200
  store <8 x double> %1203, ptr %1204, align 64, !tbaa !26
  %1205 = getelementptr inbounds nuw i8, ptr %1148, i64 896
  %1206 = load <8 x double>, ptr %1205, align 64, !tbaa !26
  %1207 = fcmp ule <8 x double> %1206, zeroinitializer
  %1208 = getelementptr inbounds nuw i8, ptr %1148, i64 2944
  %1209 = getelementptr inbounds nuw i8, ptr %1148, i64 3072
  %1210 = load <8 x double>, ptr %1209, align 64, !tbaa !26
  %1211 = fcmp ogt <8 x double> %1206, splat (double 1.000000e-30)
  %1212 = select <8 x i1> %1211, <8 x double> %1206, <8 x double> splat (double 1.000000e-30)
  %1213 = fdiv <8 x double> %1210, %1212
  %1214 = fcmp ogt <8 x double> %1213, zeroinitializer
  %1215 = select <8 x i1> %1214, <8 x double> %1213, <8 x double> zeroinitializer
  %1216 = fcmp olt <8 x double> %1215, splat (double 1.000000e+00)
  %1217 = select <8 x i1> %1216, <8 x double> %1215, <8 x double> splat (double 1.000000e+00)
  %1218 = select <8 x i1> %1207, <8 x double> zeroinitializer, <8 x double> %1217
  %1219 = getelementptr inbounds nuw i8, ptr %1148, i64 2112
  %1220 = load <8 x double>, ptr %1219, align 64, !tbaa !26
  %1221 = fmul <8 x double> %1218, splat (double 4.180000e+03)
  %1222 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1221, <8 x double> %1206, <8 x double> %1220)
  %1223 = getelementptr inbounds nuw i8, ptr %1148, i64 4288
  %1224 = load <8 x double>, ptr %1223, align 64, !tbaa !26
  %1225 = getelementptr inbounds nuw i8, ptr %1148, i64 5056
  %1226 = load <8 x double>, ptr %1225, align 64, !tbaa !26
  %1227 = fmul <8 x double> %1183, %1226
  %1228 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1179, <8 x double> %1224, <8 x double> %1227)
  %1229 = getelementptr inbounds nuw i8, ptr %1148, i64 7360
  %1230 = load <8 x i64>, ptr %1229, align 64, !tbaa !26
  %1231 = fcmp ule <8 x double> %1220, zeroinitializer
  %1232 = getelementptr inbounds nuw i8, ptr %1148, i64 6912
  store <8 x double> %1218, ptr %1232, align 64, !tbaa !26
  %1233 = fmul <8 x double> %1193, %1222
  %1234 = icmp eq <8 x i64> %1230, splat (i64 -1)
  %1235 = select <8 x i1> %1231, <8 x i1> splat (i1 true), <8 x i1> %1234
  %1236 = select <8 x i1> %1235, <8 x double> zeroinitializer, <8 x double> %1233
  %1237 = getelementptr inbounds nuw i8, ptr %1148, i64 6976
  store <8 x double> %1236, ptr %1237, align 64, !tbaa !26
  %1238 = fmul <8 x double> %1228, %1222
  %1239 = select <8 x i1> %1235, <8 x double> zeroinitializer, <8 x double> %1238
  %1240 = getelementptr inbounds nuw i8, ptr %1148, i64 7040
  store <8 x double> %1239, ptr %1240, align 64, !tbaa !26
  %1241 = load <8 x double>, ptr %1148, align 64, !tbaa !26
  %1242 = load <8 x double>, ptr %1208, align 64, !tbaa !26
  %1243 = fsub <8 x double> %1241, %1242
  %1244 = fsub <8 x double> splat (double 1.000000e+00), %1218
  %1245 = getelementptr inbounds nuw i8, ptr %1148, i64 1920
  %1246 = load <8 x double>, ptr %1245, align 64, !tbaa !26
  %1247 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1244, <8 x double> %1246, <8 x double> %1243)
  %1248 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %1249 = fdiv <8 x double> splat (double 1.000000e+00), %1248
  %1250 = getelementptr inbounds nuw i8, ptr %1148, i64 2240
  %1251 = load <8 x double>, ptr %1250, align 64, !tbaa !26
  %1252 = fcmp ogt <8 x double> %1251, splat (double 1.000000e-30)
  %1253 = select <8 x i1> %1252, <8 x double> %1251, <8 x double> splat (double 1.000000e-30)
  %1254 = fdiv <8 x double> %1247, %1253
  %1255 = fadd <8 x double> %1249, %1254
  %1256 = getelementptr inbounds nuw i8, ptr %1148, i64 7104
  store <8 x double> %1255, ptr %1256, align 64, !tbaa !26
  %1257 = getelementptr inbounds nuw i8, ptr %1148, i64 6784
  store <8 x double> %1169, ptr %1257, align 64, !tbaa !26
  %1258 = getelementptr inbounds nuw i8, ptr %1148, i64 2560
  %1259 = load <8 x double>, ptr %1258, align 64, !tbaa !26
  %1260 = getelementptr inbounds nuw i8, ptr %1148, i64 2624
  %1261 = load <8 x double>, ptr %1260, align 64, !tbaa !26
  %1262 = getelementptr inbounds nuw i8, ptr %1148, i64 2688
  %1263 = load <8 x double>, ptr %1262, align 64, !tbaa !26
  %1264 = getelementptr inbounds nuw i8, ptr %1148, i64 2752
  %1265 = load <8 x double>, ptr %1264, align 64, !tbaa !26
  %1266 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1265, <8 x double> %1263)
  %1267 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1266, <8 x double> %1261)
  %1268 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1267, <8 x double> %1259)
  %1269 = getelementptr inbounds nuw i8, ptr %1148, i64 3648
  store <8 x double> %1268, ptr %1269, align 64, !tbaa !26
  %1270 = getelementptr inbounds nuw i8, ptr %1148, i64 4416
  %1271 = load <8 x double>, ptr %1270, align 64, !tbaa !26
  %1272 = fmul <8 x double> %1179, %1271
  %1273 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1193, <8 x double> %1268, <8 x double> %1272)
  %1274 = getelementptr inbounds nuw i8, ptr %1148, i64 5184
  %1275 = load <8 x double>, ptr %1274, align 64, !tbaa !26
  %1276 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1183, <8 x double> %1275, <8 x double> %1273)
  %1277 = fmul <8 x double> %1276, splat (double 5.000000e-01)
  %1278 = getelementptr inbounds nuw i8, ptr %1148, i64 6720
  store <8 x double> %1277, ptr %1278, align 64, !tbaa !26
  %1279 = getelementptr inbounds nuw i8, ptr %1148, i64 2304
  %1280 = load <8 x double>, ptr %1279, align 64, !tbaa !26
  %1281 = getelementptr inbounds nuw i8, ptr %1148, i64 2368
  %1282 = load <8 x double>, ptr %1281, align 64, !tbaa !26
  %1283 = getelementptr inbounds nuw i8, ptr %1148, i64 2432
  %1284 = load <8 x double>, ptr %1283, align 64, !tbaa !26
  %1285 = getelementptr inbounds nuw i8, ptr %1148, i64 2496
  %1286 = load <8 x double>, ptr %1285, align 64, !tbaa !26
  %1287 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1286, <8 x double> %1284)
  %1288 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1287, <8 x double> %1282)
  %1289 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1288, <8 x double> %1280)
  %1290 = getelementptr inbounds nuw i8, ptr %1148, i64 6656
  store <8 x double> %1289, ptr %1290, align 64, !tbaa !26
  %1291 = getelementptr inbounds nuw i8, ptr %1148, i64 7552
  %1292 = load i64, ptr %1291, align 64, !tbaa !31
  %1293 = icmp eq i64 %1292, 0
  br i1 %1293, label %1294, label %1306

1294:                                             ; preds = %1145
  %1295 = fdiv <8 x double> %1289, %1242
  %1296 = load i64, ptr %141, align 16, !tbaa !21
  %1297 = getelementptr inbounds nuw i8, ptr %1148, i64 7672
  %1298 = load ptr, ptr %1297, align 8, !tbaa !35
  %1299 = getelementptr inbounds <8 x double>, ptr %1298, i64 %1296
  %1300 = load <8 x double>, ptr %1299, align 64, !tbaa !26
  %1301 = fmul <8 x double> %1295, %1300
  %1302 = getelementptr inbounds nuw i8, ptr %1148, i64 64
  %1303 = load <8 x double>, ptr %1302, align 64, !tbaa !26
  %1304 = fsub <8 x double> %1242, %1303
  %1305 = fdiv <8 x double> splat (double 1.000000e+00), %1304
  br label %1329

1306:                                             ; preds = %1145
  %1307 = getelementptr inbounds nuw i8, ptr %1148, i64 64
  %1308 = load <8 x double>, ptr %1307, align 64, !tbaa !26
  %1309 = fsub <8 x double> %1242, %1308
  %1310 = fdiv <8 x double> splat (double 1.000000e+00), %1309
  %1311 = load i64, ptr %141, align 16, !tbaa !21
  %1312 = getelementptr inbounds nuw i8, ptr %1148, i64 7672
  %1313 = load ptr, ptr %1312, align 8, !tbaa !35
  %1314 = shl nsw i64 %1311, 8
  %1315 = getelementptr inbounds i8, ptr %1313, i64 %1314
  %1316 = load <8 x double>, ptr %1315, align 64, !tbaa !26
  %1317 = getelementptr inbounds nuw i8, ptr %1315, i64 64
  %1318 = load <8 x double>, ptr %1317, align 64, !tbaa !26
  %1319 = getelementptr inbounds nuw i8, ptr %1315, i64 128
  %1320 = load <8 x double>, ptr %1319, align 64, !tbaa !26
  %1321 = getelementptr inbounds nuw i8, ptr %1315, i64 192
  %1322 = load <8 x double>, ptr %1321, align 64, !tbaa !26
  %1323 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1322, <8 x double> %1320)
  %1324 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1323, <8 x double> %1318)
  %1325 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1324, <8 x double> %1316)
  %1326 = icmp sgt i64 %1311, %1292
  %1327 = fmul <8 x double> %1310, %1325
  %1328 = select i1 %1326, <8 x double> %1327, <8 x double> %1325
  br label %1329

1329:                                             ; preds = %1294, %1306
  %1330 = phi <8 x double> [ %1305, %1294 ], [ %1310, %1306 ]
  %1331 = phi <8 x double> [ %1304, %1294 ], [ %1309, %1306 ]
  %1332 = phi <8 x double> [ %1301, %1294 ], [ %1328, %1306 ]
  %1333 = getelementptr inbounds nuw i8, ptr %1148, i64 5568
  %1334 = load <8 x double>, ptr %1333, align 64, !tbaa !26
  %1335 = fcmp ogt <8 x double> %1243, splat (double 0x3D719799812DEA11)
  %1336 = select <8 x i1> %1335, <8 x double> %1243, <8 x double> splat (double 0x3D719799812DEA11)
  %1337 = getelementptr inbounds nuw i8, ptr %1148, i64 6528
  store <8 x double> %1330, ptr %1337, align 64, !tbaa !26
  %1338 = getelementptr inbounds nuw i8, ptr %1148, i64 704
  %1339 = load <8 x double>, ptr %1338, align 64, !tbaa !26
  %1340 = fdiv <8 x double> %1339, %1336
  %1341 = getelementptr inbounds nuw i8, ptr %1148, i64 6592
  store <8 x double> %1340, ptr %1341, align 64, !tbaa !26
  %1342 = getelementptr inbounds nuw i8, ptr %1148, i64 7560
  %1343 = load ptr, ptr %1342, align 8, !tbaa !58
  %1344 = load i64, ptr %141, align 16, !tbaa !21
  %1345 = getelementptr <8 x double>, ptr %1343, i64 %1344
  %1346 = getelementptr i8, ptr %1345, i64 -64
  %1347 = load <8 x double>, ptr %1346, align 64, !tbaa !26
  %1348 = fadd <8 x double> %1334, %1347
  %1349 = fmul <8 x double> %1348, splat (double 5.000000e-01)
  %1350 = getelementptr inbounds nuw i8, ptr %1148, i64 192
  %1351 = load <8 x double>, ptr %1350, align 64, !tbaa !26
  %1352 = getelementptr inbounds nuw i8, ptr %1148, i64 256
  %1353 = load <8 x double>, ptr %1352, align 64, !tbaa !26
  %1354 = getelementptr inbounds nuw i8, ptr %1148, i64 320
  %1355 = load <8 x double>, ptr %1354, align 64, !tbaa !26
  %1356 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1349, <8 x double> %1355, <8 x double> %1353)
  %1357 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1349, <8 x double> %1356, <8 x double> %1351)
  %1358 = fmul <8 x double> %1332, %1357
  %1359 = fmul <8 x double> %1218, %1358
  %1360 = getelementptr inbounds nuw i8, ptr %1148, i64 2048
  %1361 = load <8 x double>, ptr %1360, align 64, !tbaa !26
  %1362 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1359, <8 x double> %1361, <8 x double> splat (double 1.000000e+00))
  %1363 = fdiv <8 x double> splat (double 1.000000e+00), %1362
  %1364 = icmp eq <8 x i64> %1230, zeroinitializer
  %1365 = select <8 x i1> %1364, <8 x double> %1363, <8 x double> splat (double 1.000000e+00)
  %1366 = getelementptr inbounds nuw i8, ptr %1148, i64 6848
  store <8 x double> %1365, ptr %1366, align 64, !tbaa !26
  %1367 = fmul <8 x double> %1358, %1365
  %1368 = getelementptr inbounds nuw i8, ptr %1148, i64 6016
  store <8 x double> %1367, ptr %1368, align 64, !tbaa !26
  %1369 = fmul <8 x double> %1277, splat (double 2.000000e+00)
  %1370 = getelementptr inbounds nuw i8, ptr %1148, i64 384
  %1371 = load <8 x double>, ptr %1370, align 64, !tbaa !26
  %1372 = getelementptr inbounds nuw i8, ptr %1148, i64 448
  %1373 = load <8 x double>, ptr %1372, align 64, !tbaa !26
  %1374 = getelementptr inbounds nuw i8, ptr %1148, i64 512
  %1375 = load <8 x double>, ptr %1374, align 64, !tbaa !26
  %1376 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1334, <8 x double> %1375, <8 x double> %1373)
  %1377 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1334, <8 x double> %1376, <8 x double> %1371)
  %1378 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1369, <8 x double> %1377, <8 x double> %1367)
  %1379 = getelementptr inbounds nuw i8, ptr %1148, i64 6144
  store <8 x double> %1378, ptr %1379, align 64, !tbaa !26
  %1380 = fmul <8 x double> %1203, %1244
  %1381 = getelementptr inbounds nuw i8, ptr %1148, i64 1984
  %1382 = load <8 x double>, ptr %1381, align 64, !tbaa !26
  %1383 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1380, <8 x double> %1382, <8 x double> splat (double 1.000000e+00))
  %1384 = fdiv <8 x double> %1203, %1383
  %1385 = load i64, ptr %142, align 8, !tbaa !22
  %1386 = sitofp i64 %1385 to double
  %1387 = fmul double %1386, 2.000000e+00
  %1388 = insertelement <8 x double> poison, double %1387, i64 0
  %1389 = shufflevector <8 x double> %1388, <8 x double> poison, <8 x i32> zeroinitializer
  %1390 = fmul <8 x double> %1340, %1389
  %1391 = fadd <8 x double> %1384, %1390
  %1392 = fdiv <8 x double> %1384, %1391
  %1393 = fmul <8 x double> %1289, %1390
  %1394 = select <8 x i1> %1364, <8 x double> %1384, <8 x double> %1393
  %1395 = getelementptr inbounds nuw i8, ptr %1148, i64 6080
  store <8 x double> %1394, ptr %1395, align 64, !tbaa !26
  %1396 = fmul <8 x double> %1390, %1392
  %1397 = select <8 x i1> %1364, <8 x double> %1384, <8 x double> %1396
  %1398 = getelementptr inbounds nuw i8, ptr %1148, i64 6208
  store <8 x double> %1397, ptr %1398, align 64, !tbaa !26
  %1399 = select <8 x i1> %1364, <8 x double> splat (double 1.000000e+00), <8 x double> %1392
  %1400 = getelementptr inbounds nuw i8, ptr %1148, i64 6272
  store <8 x double> %1399, ptr %1400, align 64, !tbaa !26
  br i1 %1293, label %1562, label %1401

1401:                                             ; preds = %1329
  %1402 = getelementptr inbounds nuw i8, ptr %1148, i64 576
  %1403 = load <8 x double>, ptr %1402, align 64, !tbaa !26
  %1404 = getelementptr inbounds nuw i8, ptr %1148, i64 640
  %1405 = load <8 x double>, ptr %1404, align 64, !tbaa !26
  %1406 = getelementptr inbounds nuw i8, ptr %1148, i64 1536
  %1407 = load <8 x double>, ptr %1406, align 64, !tbaa !26
  %1408 = load i64, ptr %141, align 16, !tbaa !21
  %1409 = fsub <8 x double> %1268, %1407
  %1410 = fmul <8 x double> %1373, splat (double 5.000000e-01)
  %1411 = fmul <8 x double> %1375, splat (double 0x3FE5555555555555)
  %1412 = getelementptr inbounds nuw i8, ptr %1148, i64 7648
  %1413 = load ptr, ptr %1412, align 32, !tbaa !72
  %1414 = getelementptr inbounds nuw i8, ptr %1148, i64 7656
  %1415 = load ptr, ptr %1414, align 8, !tbaa !49
  %1416 = getelementptr inbounds nuw i8, ptr %1148, i64 7584
  %1417 = load ptr, ptr %1416, align 32, !tbaa !59
  %1418 = getelementptr inbounds nuw i8, ptr %1148, i64 7624
  %1419 = load ptr, ptr %1418, align 8, !tbaa !73
  %1420 = getelementptr inbounds nuw i8, ptr %1148, i64 7632
  %1421 = load ptr, ptr %1420, align 16, !tbaa !74
  %1422 = getelementptr inbounds nuw i8, ptr %1148, i64 7640
  %1423 = load ptr, ptr %1422, align 8, !tbaa !75
  %1424 = getelementptr inbounds nuw i8, ptr %1148, i64 7608
  %1425 = load ptr, ptr %1424, align 8, !tbaa !76
  %1426 = getelementptr inbounds nuw i8, ptr %1148, i64 7616
  %1427 = load ptr, ptr %1426, align 64, !tbaa !77
  %1428 = icmp sgt i64 %1408, 0
  br i1 %1428, label %1429, label %1675

1429:                                             ; preds = %1401
  %1430 = load <8 x double>, ptr %1343, align 64, !tbaa !26
  %1431 = getelementptr inbounds nuw i8, ptr %1148, i64 2880
  %1432 = load <8 x double>, ptr %1431, align 64, !tbaa !26
  %1433 = getelementptr inbounds nuw i8, ptr %1148, i64 2816
  %1434 = load <8 x double>, ptr %1433, align 64, !tbaa !26
  %1435 = fmul <8 x double> %1277, splat (double -2.000000e+00)
  %1436 = fmul <8 x double> %1435, %1334
  %1437 = fmul <8 x double> %1334, %1436
  %1438 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1334, <8 x double> %1411, <8 x double> %1410)
  %1439 = fmul <8 x double> %1437, %1438
  %1440 = getelementptr inbounds nuw i8, ptr %1148, i64 7672
  %1441 = fmul <8 x double> %1331, %1432
  %1442 = fdiv <8 x double> %1434, %1403
  br label %1443

1443:                                             ; preds = %1429, %1527
  %1444 = phi <8 x double> [ %1430, %1429 ], [ %1531, %1527 ]
  %1445 = phi <8 x double> [ zeroinitializer, %1429 ], [ %1528, %1527 ]
  %1446 = phi <8 x double> [ zeroinitializer, %1429 ], [ %1529, %1527 ]
  %1447 = phi <8 x double> [ zeroinitializer, %1429 ], [ %1530, %1527 ]
  %1448 = phi <8 x double> [ zeroinitializer, %1429 ], [ %1557, %1527 ]
  %1449 = phi <8 x double> [ zeroinitializer, %1429 ], [ %1559, %1527 ]
  %1450 = phi <8 x double> [ %1405, %1429 ], [ %1532, %1527 ]
  %1451 = phi i64 [ 0, %1429 ], [ %1453, %1527 ]
  %1452 = phi <8 x double> [ zeroinitializer, %1429 ], [ %1533, %1527 ]
  %1453 = add nuw nsw i64 %1451, 1
  %1454 = icmp slt i64 %1453, %1408
  br i1 %1454, label %1455, label %1524

1455:                                             ; preds = %1443
  %1456 = getelementptr inbounds nuw <8 x double>, ptr %1343, i64 %1453
  %1457 = load <8 x double>, ptr %1456, align 64, !tbaa !26
  %1458 = icmp slt i64 %1453, %1292
  br i1 %1458, label %1466, label %1459

1459:                                             ; preds = %1455
  %1460 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1375, <8 x double> %1373)
  %1461 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1460, <8 x double> %1371)
  %1462 = fneg <8 x double> %1457
  %1463 = fmul <8 x double> %1457, %1462
  %1464 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1411, <8 x double> %1410)
  %1465 = fmul <8 x double> %1463, %1464
  br label %1466

1466:                                             ; preds = %1455, %1459
  %1467 = phi <8 x double> [ %1461, %1459 ], [ %1405, %1455 ]
  %1468 = phi <8 x double> [ %1465, %1459 ], [ zeroinitializer, %1455 ]
  %1469 = load i64, ptr %1291, align 64, !tbaa !31
  %1470 = icmp eq i64 %1469, 0
  %1471 = load ptr, ptr %1440, align 8, !tbaa !35
  br i1 %1470, label %1472, label %1476

1472:                                             ; preds = %1466
  %1473 = getelementptr inbounds nuw <8 x double>, ptr %1471, i64 %1453
  %1474 = load <8 x double>, ptr %1473, align 64, !tbaa !26
  %1475 = fmul <8 x double> %1330, %1474
  br label %1492

1476:                                             ; preds = %1466
  %1477 = shl nsw i64 %1453, 8
  %1478 = getelementptr inbounds nuw i8, ptr %1471, i64 %1477
  %1479 = load <8 x double>, ptr %1478, align 64, !tbaa !26
  %1480 = getelementptr inbounds nuw i8, ptr %1478, i64 64
  %1481 = load <8 x double>, ptr %1480, align 64, !tbaa !26
  %1482 = getelementptr inbounds nuw i8, ptr %1478, i64 128
  %1483 = load <8 x double>, ptr %1482, align 64, !tbaa !26
  %1484 = getelementptr inbounds nuw i8, ptr %1478, i64 192
  %1485 = load <8 x double>, ptr %1484, align 64, !tbaa !26
  %1486 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1485, <8 x double> %1483)
  %1487 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1486, <8 x double> %1481)
  %1488 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1487, <8 x double> %1479)
  %1489 = icmp slt i64 %1451, %1469
  %1490 = fmul <8 x double> %1330, %1488
  %1491 = select i1 %1489, <8 x double> %1488, <8 x double> %1490
  br label %1492

1492:                                             ; preds = %1476, %1472
  %1493 = phi <8 x double> [ %1475, %1472 ], [ %1491, %1476 ]
  %1494 = icmp slt i64 %1451, %1469
  br i1 %1494, label %1501, label %1495

1495:                                             ; preds = %1492
  %1496 = fadd <8 x double> %1444, %1457
  %1497 = fmul <8 x double> %1496, splat (double 5.000000e-01)
  %1498 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1497, <8 x double> %1355, <8 x double> %1353)
  %1499 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1497, <8 x double> %1498, <8 x double> %1351)
  %1500 = fmul <8 x double> %1499, %1493
  br label %1511

1501:                                             ; preds = %1492
  %1502 = icmp slt i64 %1453, %1469
  br i1 %1502, label %1503, label %1505

1503:                                             ; preds = %1501
  %1504 = fmul <8 x double> %1403, %1493
  br label %1511

1505:                                             ; preds = %1501
  %1506 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1355, <8 x double> %1353)
  %1507 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1506, <8 x double> %1351)
  %1508 = fdiv <8 x double> %1441, %1507
  %1509 = fadd <8 x double> %1442, %1508
  %1510 = fdiv <8 x double> %1493, %1509
  br label %1511

1511:                                             ; preds = %1495, %1503, %1505
  %1512 = phi <8 x double> [ %1500, %1495 ], [ %1504, %1503 ], [ %1510, %1505 ]
  br i1 %1458, label %1517, label %1513

1513:                                             ; preds = %1511
  %1514 = getelementptr inbounds nuw <8 x double>, ptr %1413, i64 %1453
  %1515 = load <8 x double>, ptr %1514, align 64, !tbaa !26
  %1516 = fmul <8 x double> %1277, %1515
  br label %1517

1517:                                             ; preds = %1511, %1513
  %1518 = phi <8 x double> [ %1516, %1513 ], [ zeroinitializer, %1511 ]
  %1519 = fneg <8 x double> %1518
  %1520 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1519, <8 x double> %1450, <8 x double> %1512)
  %1521 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1518, <8 x double> %1467, <8 x double> %1512)
  %1522 = fadd <8 x double> %1452, %1468
  %1523 = fmul <8 x double> %1522, %1518
  br label %1527

1524:                                             ; preds = %1443
  %1525 = load <8 x double>, ptr %1368, align 64, !tbaa !26
  %1526 = load <8 x double>, ptr %1379, align 64, !tbaa !26
  br label %1527

1527:                                             ; preds = %1524, %1517
  %1528 = phi <8 x double> [ %1520, %1517 ], [ %1525, %1524 ]
  %1529 = phi <8 x double> [ %1521, %1517 ], [ %1526, %1524 ]
  %1530 = phi <8 x double> [ %1523, %1517 ], [ %1439, %1524 ]
  %1531 = phi <8 x double> [ %1457, %1517 ], [ %1444, %1524 ]
  %1532 = phi <8 x double> [ %1467, %1517 ], [ %1450, %1524 ]
  %1533 = phi <8 x double> [ %1468, %1517 ], [ %1452, %1524 ]
  %1534 = getelementptr inbounds nuw <8 x double>, ptr %1415, i64 %1451
  %1535 = load <8 x double>, ptr %1534, align 64, !tbaa !26
  %1536 = icmp slt i64 %1451, %1292
  %1537 = select i1 %1536, <8 x double> %1407, <8 x double> %1409
  %1538 = fmul <8 x double> %1193, %1537
  %1539 = fmul <8 x double> %1538, %1535
  %1540 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1539, <8 x double> %1450, <8 x double> %1528)
  %1541 = fadd <8 x double> %1446, %1540
  %1542 = fsub <8 x double> %1530, %1447
  %1543 = fneg <8 x double> %1539
  %1544 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1543, <8 x double> %1452, <8 x double> %1542)
  %1545 = getelementptr inbounds nuw <8 x double>, ptr %1417, i64 %1451
  %1546 = load <8 x double>, ptr %1545, align 64, !tbaa !26
  %1547 = fsub <8 x double> %1544, %1546
  %1548 = fneg <8 x double> %1445
  %1549 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1548, <8 x double> %1449, <8 x double> %1541)
  %1550 = fdiv <8 x double> splat (double 1.000000e+00), %1549
  %1551 = getelementptr inbounds nuw <8 x double>, ptr %1419, i64 %1451
  store <8 x double> %1547, ptr %1551, align 64, !tbaa !26
  %1552 = getelementptr inbounds nuw <8 x double>, ptr %1421, i64 %1451
  store <8 x double> %1445, ptr %1552, align 64, !tbaa !26
  %1553 = fadd <8 x double> %1445, %1529
  %1554 = fsub <8 x double> %1553, %1541
  %1555 = getelementptr inbounds nuw <8 x double>, ptr %1423, i64 %1451
  store <8 x double> %1554, ptr %1555, align 64, !tbaa !26
  %1556 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1445, <8 x double> %1448, <8 x double> %1547)
  %1557 = fmul <8 x double> %1556, %1550
  %1558 = getelementptr inbounds nuw <8 x double>, ptr %1425, i64 %1451
  store <8 x double> %1557, ptr %1558, align 64, !tbaa !26
  %1559 = fmul <8 x double> %1529, %1550
  %1560 = getelementptr inbounds nuw <8 x double>, ptr %1427, i64 %1451
  store <8 x double> %1559, ptr %1560, align 64, !tbaa !26
  %1561 = icmp eq i64 %1453, %1408
  br i1 %1561, label %1675, label %1443, !llvm.loop !78

1562:                                             ; preds = %1329
  %1563 = getelementptr inbounds nuw i8, ptr %1148, i64 1536
  %1564 = load <8 x double>, ptr %1563, align 64, !tbaa !26
  %1565 = load i64, ptr %141, align 16, !tbaa !21
  %1566 = fdiv <8 x double> %1289, %1242
  %1567 = fsub <8 x double> %1268, %1564
  %1568 = fmul <8 x double> %1193, %1567
  %1569 = fmul <8 x double> %1373, splat (double 5.000000e-01)
  %1570 = fmul <8 x double> %1375, splat (double 0x3FE5555555555555)
  %1571 = getelementptr inbounds nuw i8, ptr %1148, i64 7648
  %1572 = load ptr, ptr %1571, align 32, !tbaa !72
  %1573 = getelementptr inbounds nuw i8, ptr %1148, i64 7656
  %1574 = load ptr, ptr %1573, align 8, !tbaa !49
  %1575 = getelementptr inbounds nuw i8, ptr %1148, i64 7584
  %1576 = load ptr, ptr %1575, align 32, !tbaa !59
  %1577 = getelementptr inbounds nuw i8, ptr %1148, i64 7624
  %1578 = load ptr, ptr %1577, align 8, !tbaa !73
  %1579 = getelementptr inbounds nuw i8, ptr %1148, i64 7632
  %1580 = load ptr, ptr %1579, align 16, !tbaa !74
  %1581 = getelementptr inbounds nuw i8, ptr %1148, i64 7640
  %1582 = load ptr, ptr %1581, align 8, !tbaa !75
  %1583 = getelementptr inbounds nuw i8, ptr %1148, i64 7608
  %1584 = load ptr, ptr %1583, align 8, !tbaa !76
  %1585 = getelementptr inbounds nuw i8, ptr %1148, i64 7616
  %1586 = load ptr, ptr %1585, align 64, !tbaa !77
  %1587 = icmp sgt i64 %1565, 0
  br i1 %1587, label %1588, label %1675

1588:                                             ; preds = %1562
  %1589 = load <8 x double>, ptr %1343, align 64, !tbaa !26
  %1590 = fneg <8 x double> %1589
  %1591 = fmul <8 x double> %1589, %1590
  %1592 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1589, <8 x double> %1570, <8 x double> %1569)
  %1593 = fmul <8 x double> %1591, %1592
  %1594 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1589, <8 x double> %1375, <8 x double> %1373)
  %1595 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1589, <8 x double> %1594, <8 x double> %1371)
  %1596 = fmul <8 x double> %1277, splat (double -2.000000e+00)
  %1597 = fmul <8 x double> %1596, %1334
  %1598 = fmul <8 x double> %1334, %1597
  %1599 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1334, <8 x double> %1570, <8 x double> %1569)
  %1600 = fmul <8 x double> %1598, %1599
  %1601 = getelementptr inbounds nuw i8, ptr %1148, i64 7672
  br label %1602

1602:                                             ; preds = %1588, %1643
  %1603 = phi <8 x double> [ %1589, %1588 ], [ %1647, %1643 ]
  %1604 = phi <8 x double> [ zeroinitializer, %1588 ], [ %1644, %1643 ]
  %1605 = phi <8 x double> [ zeroinitializer, %1588 ], [ %1645, %1643 ]
  %1606 = phi <8 x double> [ zeroinitializer, %1588 ], [ %1646, %1643 ]
  %1607 = phi <8 x double> [ zeroinitializer, %1588 ], [ %1670, %1643 ]
  %1608 = phi <8 x double> [ zeroinitializer, %1588 ], [ %1672, %1643 ]
  %1609 = phi <8 x double> [ %1595, %1588 ], [ %1648, %1643 ]
  %1610 = phi i64 [ 0, %1588 ], [ %1612, %1643 ]
  %1611 = phi <8 x double> [ %1593, %1588 ], [ %1649, %1643 ]
  %1612 = add nuw nsw i64 %1610, 1
  %1613 = icmp slt i64 %1612, %1565
  br i1 %1613, label %1614, label %1640

1614:                                             ; preds = %1602
  %1615 = getelementptr inbounds nuw <8 x double>, ptr %1343, i64 %1612
  %1616 = load <8 x double>, ptr %1615, align 64, !tbaa !26
  %1617 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1616, <8 x double> %1375, <8 x double> %1373)
  %1618 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1616, <8 x double> %1617, <8 x double> %1371)
  %1619 = fneg <8 x double> %1616
  %1620 = fmul <8 x double> %1616, %1619
  %1621 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1616, <8 x double> %1570, <8 x double> %1569)
  %1622 = fmul <8 x double> %1620, %1621
  %1623 = fadd <8 x double> %1603, %1616
  %1624 = fmul <8 x double> %1623, splat (double 5.000000e-01)
  %1625 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1624, <8 x double> %1355, <8 x double> %1353)
  %1626 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1624, <8 x double> %1625, <8 x double> %1351)
  %1627 = load ptr, ptr %1601, align 8, !tbaa !35
  %1628 = getelementptr inbounds nuw <8 x double>, ptr %1627, i64 %1612
  %1629 = load <8 x double>, ptr %1628, align 64, !tbaa !26
  %1630 = fmul <8 x double> %1566, %1629
  %1631 = fmul <8 x double> %1630, %1626
  %1632 = getelementptr inbounds nuw <8 x double>, ptr %1572, i64 %1612
  %1633 = load <8 x double>, ptr %1632, align 64, !tbaa !26
  %1634 = fmul <8 x double> %1277, %1633
  %1635 = fneg <8 x double> %1634
  %1636 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1635, <8 x double> %1609, <8 x double> %1631)
  %1637 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1634, <8 x double> %1618, <8 x double> %1631)
  %1638 = fadd <8 x double> %1611, %1622
  %1639 = fmul <8 x double> %1638, %1634
  br label %1643

1640:                                             ; preds = %1602
  %1641 = load <8 x double>, ptr %1368, align 64, !tbaa !26
  %1642 = load <8 x double>, ptr %1379, align 64, !tbaa !26
  br label %1643

1643:                                             ; preds = %1640, %1614
  %1644 = phi <8 x double> [ %1636, %1614 ], [ %1641, %1640 ]
  %1645 = phi <8 x double> [ %1637, %1614 ], [ %1642, %1640 ]
  %1646 = phi <8 x double> [ %1639, %1614 ], [ %1600, %1640 ]
  %1647 = phi <8 x double> [ %1616, %1614 ], [ %1603, %1640 ]
  %1648 = phi <8 x double> [ %1618, %1614 ], [ %1609, %1640 ]
  %1649 = phi <8 x double> [ %1622, %1614 ], [ %1611, %1640 ]
  %1650 = getelementptr inbounds nuw <8 x double>, ptr %1574, i64 %1610
  %1651 = load <8 x double>, ptr %1650, align 64, !tbaa !26
  %1652 = fmul <8 x double> %1568, %1651
  %1653 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1652, <8 x double> %1609, <8 x double> %1644)
  %1654 = fadd <8 x double> %1605, %1653
  %1655 = fsub <8 x double> %1646, %1606
  %1656 = fneg <8 x double> %1652
  %1657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1656, <8 x double> %1611, <8 x double> %1655)
  %1658 = getelementptr inbounds nuw <8 x double>, ptr %1576, i64 %1610
  %1659 = load <8 x double>, ptr %1658, align 64, !tbaa !26
  %1660 = fsub <8 x double> %1657, %1659
  %1661 = fneg <8 x double> %1604
  %1662 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1661, <8 x double> %1608, <8 x double> %1654)
  %1663 = fdiv <8 x double> splat (double 1.000000e+00), %1662
  %1664 = getelementptr inbounds nuw <8 x double>, ptr %1578, i64 %1610
  store <8 x double> %1660, ptr %1664, align 64, !tbaa !26
  %1665 = getelementptr inbounds nuw <8 x double>, ptr %1580, i64 %1610
  store <8 x double> %1604, ptr %1665, align 64, !tbaa !26
  %1666 = fadd <8 x double> %1604, %1645
  %1667 = fsub <8 x double> %1666, %1654
  %1668 = getelementptr inbounds nuw <8 x double>, ptr %1582, i64 %1610
  store <8 x double> %1667, ptr %1668, align 64, !tbaa !26
  %1669 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1604, <8 x double> %1607, <8 x double> %1660)
  %1670 = fmul <8 x double> %1669, %1663
  %1671 = getelementptr inbounds nuw <8 x double>, ptr %1584, i64 %1610
  store <8 x double> %1670, ptr %1671, align 64, !tbaa !26
  %1672 = fmul <8 x double> %1645, %1663
  %1673 = getelementptr inbounds nuw <8 x double>, ptr %1586, i64 %1610
  store <8 x double> %1672, ptr %1673, align 64, !tbaa !26
  %1674 = icmp eq i64 %1612, %1565
  br i1 %1674, label %1675, label %1602, !llvm.loop !79

1675:                                             ; preds = %1527, %1643, %1401, %1562
  %1676 = getelementptr inbounds nuw i8, ptr %1148, i64 7608
  %1677 = load ptr, ptr %1676, align 8, !tbaa !76
  %1678 = load i64, ptr %141, align 16, !tbaa !21
  %1679 = add nsw i64 %1678, -1
  %1680 = getelementptr inbounds <8 x double>, ptr %1677, i64 %1679
  %1681 = load <8 x double>, ptr %1680, align 64, !tbaa !26
  %1682 = getelementptr inbounds nuw i8, ptr %1148, i64 7616
  %1683 = load ptr, ptr %1682, align 64, !tbaa !77
  %1684 = getelementptr inbounds <8 x double>, ptr %1683, i64 %1679
  %1685 = load <8 x double>, ptr %1684, align 64, !tbaa !26
  %1686 = load <8 x double>, ptr %1368, align 64, !tbaa !26
  %1687 = fmul <8 x double> %1681, %1686
  %1688 = fsub <8 x double> splat (double 1.000000e+00), %1685
  %1689 = fmul <8 x double> %1686, %1688
  %1690 = load <8 x double>, ptr %1395, align 64, !tbaa !26
  %1691 = load <8 x double>, ptr %1201, align 64, !tbaa !26
  %1692 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1690, <8 x double> %1691, <8 x double> %1687)
  %1693 = load <8 x double>, ptr %1240, align 64, !tbaa !26
  %1694 = fsub <8 x double> %1692, %1693
  %1695 = fadd <8 x double> %1689, %1690
  %1696 = load <8 x double>, ptr %1237, align 64, !tbaa !26
  %1697 = fadd <8 x double> %1695, %1696
  %1698 = load <8 x i64>, ptr %1229, align 64, !tbaa !26
  %1699 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1698)
  %1700 = icmp eq i64 %1699, 0
  %1701 = load i64, ptr %142, align 8, !tbaa !22
  br i1 %1700, label %1702, label %1717

1702:                                             ; preds = %1675
  %1703 = icmp slt i64 %1701, 0
  br i1 %1703, label %1708, label %1704

1704:                                             ; preds = %1702
  %1705 = getelementptr inbounds nuw i8, ptr %1148, i64 1408
  %1706 = getelementptr inbounds nuw i8, ptr %1148, i64 7728
  %1707 = load <8 x double>, ptr %1705, align 64, !tbaa !26
  br label %1710

1708:                                             ; preds = %1710, %1702
  %1709 = getelementptr inbounds nuw i8, ptr %1148, i64 5824
  store <8 x double> %1694, ptr %1709, align 64, !tbaa !26
  br label %1844

1710:                                             ; preds = %1704, %1710
  %1711 = phi i64 [ 0, %1704 ], [ %1714, %1710 ]
  %1712 = load ptr, ptr %1706, align 16, !tbaa !80
  %1713 = getelementptr inbounds nuw <8 x double>, ptr %1712, i64 %1711
  store <8 x double> %1707, ptr %1713, align 64, !tbaa !26
  %1714 = add nuw nsw i64 %1711, 1
  %1715 = load i64, ptr %142, align 8, !tbaa !22
  %1716 = icmp slt i64 %1711, %1715
  br i1 %1716, label %1710, label %1708, !llvm.loop !81

1717:                                             ; preds = %1675
  %1718 = load <8 x double>, ptr %1208, align 64, !tbaa !26
  %1719 = load <8 x double>, ptr %1257, align 64, !tbaa !26
  %1720 = getelementptr inbounds nuw i8, ptr %1148, i64 1280
  %1721 = load <8 x double>, ptr %1720, align 64, !tbaa !26
  %1722 = fmul <8 x double> %1719, %1721
  %1723 = load <8 x double>, ptr %1148, align 64, !tbaa !26
  %1724 = fsub <8 x double> %1723, %1718
  %1725 = sitofp i64 %1701 to double
  %1726 = insertelement <8 x double> poison, double %1725, i64 0
  %1727 = shufflevector <8 x double> %1726, <8 x double> poison, <8 x i32> zeroinitializer
  %1728 = fdiv <8 x double> %1724, %1727
  %1729 = load <8 x double>, ptr %1398, align 64, !tbaa !26
  %1730 = load <8 x double>, ptr %1400, align 64, !tbaa !26
  %1731 = getelementptr inbounds nuw i8, ptr %1148, i64 1408
  %1732 = load <8 x double>, ptr %1731, align 64, !tbaa !26
  %1733 = getelementptr inbounds nuw i8, ptr %1148, i64 7728
  %1734 = load ptr, ptr %1733, align 16, !tbaa !80
  %1735 = getelementptr inbounds <8 x double>, ptr %1734, i64 %1701
  store <8 x double> %1732, ptr %1735, align 64, !tbaa !26
  %1736 = icmp sgt i64 %1701, 0
  br i1 %1736, label %1737, label %1828

1737:                                             ; preds = %1717
  %1738 = fneg <8 x double> %1722
  %1739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1738, <8 x double> %1730, <8 x double> %1729)
  %1740 = fsub <8 x double> splat (double 1.000000e+00), %1730
  %1741 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1722, <8 x double> %1740, <8 x double> %1729)
  %1742 = getelementptr inbounds nuw i8, ptr %1148, i64 7736
  %1743 = getelementptr inbounds nuw i8, ptr %1148, i64 7744
  %1744 = getelementptr inbounds nuw i8, ptr %1148, i64 768
  %1745 = fmul <8 x double> %1722, splat (double -5.000000e-01)
  %1746 = getelementptr inbounds nuw i8, ptr %1148, i64 7704
  %1747 = getelementptr inbounds nuw i8, ptr %1148, i64 7712
  %1748 = getelementptr inbounds nuw i8, ptr %1148, i64 7720
  br label %1749

1749:                                             ; preds = %1737, %1803
  %1750 = phi <8 x double> [ %1741, %1737 ], [ %1805, %1803 ]
  %1751 = phi <8 x double> [ %1739, %1737 ], [ %1806, %1803 ]
  %1752 = phi <8 x double> [ %1691, %1737 ], [ %1821, %1803 ]
  %1753 = phi <8 x double> [ zeroinitializer, %1737 ], [ %1824, %1803 ]
  %1754 = phi <8 x double> [ %1732, %1737 ], [ %1767, %1803 ]
  %1755 = phi i64 [ %1701, %1737 ], [ %1756, %1803 ]
  %1756 = add nsw i64 %1755, -1
  %1757 = uitofp nneg i64 %1756 to double
  %1758 = insertelement <8 x double> poison, double %1757, i64 0
  %1759 = shufflevector <8 x double> %1758, <8 x double> poison, <8 x i32> zeroinitializer
  %1760 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1759, <8 x double> %1728, <8 x double> %1718)
  %1761 = load <8 x double>, ptr %1258, align 64, !tbaa !26
  %1762 = load <8 x double>, ptr %1260, align 64, !tbaa !26
  %1763 = load <8 x double>, ptr %1262, align 64, !tbaa !26
  %1764 = load <8 x double>, ptr %1264, align 64, !tbaa !26
  %1765 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1760, <8 x double> %1764, <8 x double> %1763)
  %1766 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1760, <8 x double> %1765, <8 x double> %1762)
  %1767 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1760, <8 x double> %1766, <8 x double> %1761)
  %1768 = load <8 x double>, ptr %1192, align 64, !tbaa !26
  %1769 = load <8 x double>, ptr %1178, align 64, !tbaa !26
  %1770 = load ptr, ptr %1742, align 8, !tbaa !50
  %1771 = getelementptr inbounds nuw <8 x double>, ptr %1770, i64 %1756
  %1772 = load <8 x double>, ptr %1771, align 64, !tbaa !26
  %1773 = fmul <8 x double> %1769, %1772
  %1774 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1768, <8 x double> %1767, <8 x double> %1773)
  %1775 = load <8 x double>, ptr %1182, align 64, !tbaa !26
  %1776 = load ptr, ptr %1743, align 64, !tbaa !60
  %1777 = getelementptr inbounds nuw <8 x double>, ptr %1776, i64 %1756
  %1778 = load <8 x double>, ptr %1777, align 64, !tbaa !26
  %1779 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1775, <8 x double> %1778, <8 x double> %1774)
  %1780 = fmul <8 x double> %1779, splat (double 5.000000e-01)
  %1781 = icmp eq i64 %1755, 1
  br i1 %1781, label %1797, label %1782

1782:                                             ; preds = %1749
  %1783 = load <8 x double>, ptr %1744, align 64, !tbaa !26
  %1784 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1780, <8 x double> %1783, <8 x double> %1745)
  %1785 = load <8 x double>, ptr %1341, align 64, !tbaa !26
  %1786 = fmul <8 x double> %1727, %1785
  %1787 = load <8 x double>, ptr %1279, align 64, !tbaa !26
  %1788 = load <8 x double>, ptr %1281, align 64, !tbaa !26
  %1789 = load <8 x double>, ptr %1283, align 64, !tbaa !26
  %1790 = load <8 x double>, ptr %1285, align 64, !tbaa !26
  %1791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1760, <8 x double> %1790, <8 x double> %1789)
  %1792 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1760, <8 x double> %1791, <8 x double> %1788)
  %1793 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1760, <8 x double> %1792, <8 x double> %1787)
  %1794 = fmul <8 x double> %1786, %1793
  %1795 = fsub <8 x double> %1794, %1784
  %1796 = fadd <8 x double> %1784, %1794
  br label %1803

1797:                                             ; preds = %1749
  %1798 = load <8 x double>, ptr %1395, align 64, !tbaa !26
  %1799 = load <8 x double>, ptr %1744, align 64, !tbaa !26
  %1800 = fmul <8 x double> %1780, splat (double -2.000000e+00)
  %1801 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1800, <8 x double> %1799, <8 x double> %1798)
  %1802 = fadd <8 x double> %1722, %1801
  br label %1803

1803:                                             ; preds = %1797, %1782
  %1804 = phi <8 x double> [ %1783, %1782 ], [ %1799, %1797 ]
  %1805 = phi <8 x double> [ %1795, %1782 ], [ %1802, %1797 ]
  %1806 = phi <8 x double> [ %1796, %1782 ], [ %1798, %1797 ]
  %1807 = fsub <8 x double> %1754, %1767
  %1808 = fmul <8 x double> %1768, %1807
  %1809 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1808, <8 x double> %1804, <8 x double> %1750)
  %1810 = fadd <8 x double> %1806, %1809
  %1811 = fneg <8 x double> %1751
  %1812 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1811, <8 x double> %1753, <8 x double> %1810)
  %1813 = fdiv <8 x double> splat (double 1.000000e+00), %1812
  %1814 = load ptr, ptr %1733, align 16, !tbaa !80
  %1815 = getelementptr inbounds nuw <8 x double>, ptr %1814, i64 %1756
  store <8 x double> %1767, ptr %1815, align 64, !tbaa !26
  %1816 = load ptr, ptr %1746, align 8, !tbaa !63
  %1817 = getelementptr inbounds nuw <8 x double>, ptr %1816, i64 %1756
  %1818 = load <8 x double>, ptr %1817, align 64, !tbaa !26
  %1819 = fneg <8 x double> %1818
  %1820 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1751, <8 x double> %1752, <8 x double> %1819)
  %1821 = fmul <8 x double> %1813, %1820
  %1822 = load ptr, ptr %1747, align 32, !tbaa !82
  %1823 = getelementptr inbounds nuw <8 x double>, ptr %1822, i64 %1756
  store <8 x double> %1821, ptr %1823, align 64, !tbaa !26
  %1824 = fmul <8 x double> %1805, %1813
  %1825 = load ptr, ptr %1748, align 8, !tbaa !83
  %1826 = getelementptr inbounds nuw <8 x double>, ptr %1825, i64 %1756
  store <8 x double> %1824, ptr %1826, align 64, !tbaa !26
  %1827 = icmp samesign ugt i64 %1755, 1
  br i1 %1827, label %1749, label %1828, !llvm.loop !84

1828:                                             ; preds = %1803, %1717
  %1829 = load <8 x i64>, ptr %1229, align 64, !tbaa !26
  %1830 = load <8 x double>, ptr %1395, align 64, !tbaa !26
  %1831 = getelementptr inbounds nuw i8, ptr %1148, i64 7712
  %1832 = load ptr, ptr %1831, align 32, !tbaa !82
  %1833 = load <8 x double>, ptr %1832, align 64, !tbaa !26
  %1834 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1830, <8 x double> %1833, <8 x double> %1687)
  %1835 = icmp eq <8 x i64> %1829, zeroinitializer
  %1836 = select <8 x i1> %1835, <8 x double> %1694, <8 x double> %1834
  %1837 = getelementptr inbounds nuw i8, ptr %1148, i64 5824
  store <8 x double> %1836, ptr %1837, align 64, !tbaa !26
  %1838 = getelementptr inbounds nuw i8, ptr %1148, i64 7720
  %1839 = load ptr, ptr %1838, align 8, !tbaa !83
  %1840 = load <8 x double>, ptr %1839, align 64, !tbaa !26
  %1841 = fsub <8 x double> splat (double 1.000000e+00), %1840
  %1842 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1830, <8 x double> %1841, <8 x double> %1689)
  %1843 = select <8 x i1> %1835, <8 x double> %1697, <8 x double> %1842
  br label %1844

1844:                                             ; preds = %1708, %1828
  %1845 = phi <8 x double> [ %1697, %1708 ], [ %1843, %1828 ]
  %1846 = getelementptr inbounds nuw i8, ptr %1148, i64 5888
  store <8 x double> %1845, ptr %1846, align 64, !tbaa !26
  %1847 = add nuw nsw i64 %1146, 1
  %1848 = load i64, ptr %166, align 8, !tbaa !20
  %1849 = icmp slt i64 %1847, %1848
  br i1 %1849, label %1145, label %1142, !llvm.loop !85

1850:                                             ; preds = %1951, %1140, %1142
  %1851 = phi <8 x double> [ %1143, %1142 ], [ %1141, %1140 ], [ %1143, %1951 ]
  %1852 = phi i64 [ %1848, %1142 ], [ %1135, %1140 ], [ %1952, %1951 ]
  %1853 = fcmp ogt <8 x double> %1851, zeroinitializer
  %1854 = bitcast <8 x i1> %1853 to i8
  %1855 = icmp eq i8 %1854, 0
  br i1 %1855, label %2038, label %1955

1856:                                             ; preds = %1142, %1951
  %1857 = phi i64 [ %1952, %1951 ], [ %1848, %1142 ]
  %1858 = phi i64 [ %1953, %1951 ], [ 0, %1142 ]
  %1859 = load ptr, ptr %151, align 8, !tbaa !28
  %1860 = getelementptr inbounds nuw %struct.Piece, ptr %1859, i64 %1858
  %1861 = getelementptr inbounds nuw i8, ptr %1860, i64 7488
  %1862 = load <8 x i64>, ptr %1861, align 64, !tbaa !26
  %1863 = getelementptr inbounds nuw i8, ptr %1860, i64 2240
  %1864 = load <8 x double>, ptr %1863, align 64, !tbaa !26
  %1865 = fcmp ogt <8 x double> %1864, zeroinitializer
  %1866 = select <8 x i1> %1865, <8 x i64> %1862, <8 x i64> zeroinitializer
  %1867 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1866)
  %1868 = icmp eq i64 %1867, 0
  br i1 %1868, label %1951, label %1869

1869:                                             ; preds = %1856
  %1870 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %1871 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1870, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1872 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1870, <8 x double> %1871, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1873 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %1874 = getelementptr inbounds nuw i8, ptr %1860, i64 5824
  %1875 = load <8 x double>, ptr %1874, align 64, !tbaa !26
  %1876 = getelementptr inbounds nuw i8, ptr %1860, i64 5888
  %1877 = load <8 x double>, ptr %1876, align 64, !tbaa !26
  %1878 = fdiv <8 x double> %1875, %1877
  %1879 = fcmp olt <8 x double> %1878, %1870
  %1880 = select <8 x i1> %1879, <8 x double> %1878, <8 x double> %1870
  %1881 = getelementptr inbounds nuw i8, ptr %1860, i64 3520
  %1882 = load <8 x double>, ptr %1881, align 64, !tbaa !26
  %1883 = fcmp olt <8 x double> %1882, %1880
  %1884 = select <8 x i1> %1883, <8 x double> %1882, <8 x double> %1880
  %1885 = fneg <8 x double> %1877
  %1886 = getelementptr inbounds nuw i8, ptr %1860, i64 7104
  %1887 = load <8 x double>, ptr %1886, align 64, !tbaa !26
  br label %1891

1888:                                             ; preds = %1891
  %1889 = getelementptr inbounds nuw i8, ptr %1860, i64 5952
  store <8 x double> %1942, ptr %1889, align 64, !tbaa !26
  %1890 = load i64, ptr %166, align 8, !tbaa !20
  br label %1951

1891:                                             ; preds = %1869, %1891
  %1892 = phi <8 x i64> [ %1866, %1869 ], [ %1945, %1891 ]
  %1893 = phi i32 [ 0, %1869 ], [ %1946, %1891 ]
  %1894 = phi <8 x double> [ %1884, %1869 ], [ %1942, %1891 ]
  %1895 = fadd <8 x double> %1894, splat (double 2.731500e+02)
  %1896 = fcmp ogt <8 x double> %1894, zeroinitializer
  %1897 = select <8 x i1> %1896, <8 x double> %1894, <8 x double> zeroinitializer
  %1898 = fadd <8 x double> %1897, splat (double 2.731500e+02)
  %1899 = fadd <8 x double> %1898, splat (double 0xC08451671D164BD4)
  %1900 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %1899
  %1901 = fsub <8 x double> %1898, %1900
  %1902 = fadd <8 x double> %1901, splat (double 0x40923C3565924845)
  %1903 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1901, <8 x double> %1902, <8 x double> splat (double 0xC12619EA558539E6))
  %1904 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1901, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %1905 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1901, <8 x double> %1904, <8 x double> splat (double 0xC148A99584203885))
  %1906 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1901, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %1907 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1901, <8 x double> %1906, <8 x double> splat (double 0x4118B9E59F2691E5))
  %1908 = fmul <8 x double> %1907, splat (double 2.000000e+00)
  %1909 = fmul <8 x double> %1903, splat (double 4.000000e+00)
  %1910 = fneg <8 x double> %1907
  %1911 = fmul <8 x double> %1909, %1910
  %1912 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1905, <8 x double> %1905, <8 x double> %1911)
  %1913 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1912)
  %1914 = fsub <8 x double> %1913, %1905
  %1915 = fdiv <8 x double> %1908, %1914
  %1916 = fmul <8 x double> %1915, %1915
  %1917 = fmul <8 x double> %1916, splat (double 1.000000e+06)
  %1918 = fmul <8 x double> %1916, %1917
  %1919 = fmul <8 x double> %1895, splat (double 4.615260e+02)
  %1920 = fdiv <8 x double> %1918, %1919
  %1921 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1885, <8 x double> %1894, <8 x double> %1875)
  %1922 = fsub <8 x double> %1920, %1873
  %1923 = fcmp ogt <8 x double> %1922, zeroinitializer
  %1924 = select <8 x i1> %1923, <8 x double> %1922, <8 x double> zeroinitializer
  %1925 = fmul <8 x double> %1872, %1924
  %1926 = fdiv <8 x double> %1925, %1887
  %1927 = fsub <8 x double> %1921, %1926
  %1928 = fmul <8 x double> %1872, %1920
  %1929 = fdiv <8 x double> %1872, %1919
  %1930 = fadd <8 x double> %1929, splat (double -1.000000e+00)
  %1931 = fmul <8 x double> %1930, %1928
  %1932 = fdiv <8 x double> %1931, %1895
  %1933 = fdiv <8 x double> %1932, %1887
  %1934 = fcmp ule <8 x double> %1920, %1873
  %1935 = select <8 x i1> %1934, <8 x double> zeroinitializer, <8 x double> %1933
  %1936 = fsub <8 x double> %1885, %1935
  %1937 = fdiv <8 x double> %1927, %1936
  %1938 = fsub <8 x double> %1894, %1937
  %1939 = fcmp olt <8 x double> %1938, %1880
  %1940 = select <8 x i1> %1939, <8 x double> %1938, <8 x double> %1880
  %1941 = icmp eq <8 x i64> %1892, zeroinitializer
  %1942 = select <8 x i1> %1941, <8 x double> %1894, <8 x double> %1940
  %1943 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1937)
  %1944 = fcmp oge <8 x double> %1943, splat (double 1.000000e-05)
  %1945 = select <8 x i1> %1944, <8 x i64> %1892, <8 x i64> zeroinitializer
  %1946 = add nuw nsw i32 %1893, 1
  %1947 = icmp samesign ult i32 %1893, 7
  %1948 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1945)
  %1949 = icmp ne i64 %1948, 0
  %1950 = select i1 %1947, i1 %1949, i1 false
  br i1 %1950, label %1891, label %1888, !llvm.loop !86

1951:                                             ; preds = %1856, %1888
  %1952 = phi i64 [ %1857, %1856 ], [ %1890, %1888 ]
  %1953 = add nuw nsw i64 %1858, 1
  %1954 = icmp slt i64 %1953, %1952
  br i1 %1954, label %1856, label %1850, !llvm.loop !87

1955:                                             ; preds = %1850
  %1956 = sext <8 x i1> %1853 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %1956, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %1957 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %1958 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %1959 = fadd <8 x double> %1957, %1958
  store <8 x double> %1959, ptr %6, align 64, !tbaa !26
  %1960 = load ptr, ptr %184, align 8
  %1961 = load ptr, ptr %186, align 8
  %1962 = load ptr, ptr %187, align 8
  br label %1963

1963:                                             ; preds = %2033, %1955
  %1964 = phi i64 [ 0, %1955 ], [ %2034, %2033 ]
  %1965 = getelementptr inbounds nuw i64, ptr %4, i64 %1964
  %1966 = load i64, ptr %1965, align 8, !tbaa !30
  %1967 = icmp eq i64 %1966, 0
  br i1 %1967, label %2033, label %1968

1968:                                             ; preds = %1963
  %1969 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %1964
  %1970 = load i64, ptr %1969, align 8, !tbaa !30
  %1971 = shl nsw i64 %1970, 1
  %1972 = or disjoint i64 %1971, 1
  %1973 = getelementptr inbounds i64, ptr %1960, i64 %1972
  %1974 = load i64, ptr %1973, align 8, !tbaa !30
  %1975 = shl nuw nsw i64 %1964, 1
  %1976 = or disjoint i64 %1975, 1
  %1977 = getelementptr inbounds nuw [16 x i64], ptr %185, i64 0, i64 %1976
  %1978 = getelementptr inbounds i64, ptr %1962, i64 %1972
  %1979 = load i64, ptr %1978, align 8, !tbaa !30
  %1980 = shl nsw i64 %1979, 4
  %1981 = getelementptr inbounds i8, ptr %1961, i64 %1980
  %1982 = getelementptr inbounds nuw double, ptr %6, i64 %1964
  %1983 = load double, ptr %1982, align 8, !tbaa !43
  %1984 = load i64, ptr %1977, align 8, !tbaa !30
  %1985 = getelementptr i8, ptr %1981, i64 -16
  %1986 = icmp sgt i64 %1984, 0
  br i1 %1986, label %1987, label %1996

1987:                                             ; preds = %1968, %1993
  %1988 = phi i64 [ %1994, %1993 ], [ %1984, %1968 ]
  %1989 = shl i64 %1988, 4
  %1990 = getelementptr i8, ptr %1985, i64 %1989
  %1991 = load double, ptr %1990, align 8, !tbaa !43
  %1992 = fcmp ugt double %1983, %1991
  br i1 %1992, label %1996, label %1993

1993:                                             ; preds = %1987
  %1994 = add nsw i64 %1988, -1
  store i64 %1994, ptr %1977, align 8, !tbaa !30
  %1995 = icmp sgt i64 %1988, 1
  br i1 %1995, label %1987, label %1996, !llvm.loop !69

1996:                                             ; preds = %1993, %1987, %1968
  %1997 = phi i64 [ %1984, %1968 ], [ 0, %1993 ], [ %1988, %1987 ]
  %1998 = icmp slt i64 %1997, %1974
  br i1 %1998, label %1999, label %2008

1999:                                             ; preds = %1996, %2005
  %2000 = phi i64 [ %2006, %2005 ], [ %1997, %1996 ]
  %2001 = shl nsw i64 %2000, 4
  %2002 = getelementptr inbounds i8, ptr %1981, i64 %2001
  %2003 = load double, ptr %2002, align 8, !tbaa !43
  %2004 = fcmp ule double %1983, %2003
  br i1 %2004, label %2013, label %2005

2005:                                             ; preds = %1999
  %2006 = add i64 %2000, 1
  store i64 %2006, ptr %1977, align 8, !tbaa !30
  %2007 = icmp eq i64 %2006, %1974
  br i1 %2007, label %2008, label %1999, !llvm.loop !70

2008:                                             ; preds = %2005, %1996
  %2009 = shl i64 %1974, 4
  %2010 = getelementptr i8, ptr %1981, i64 %2009
  %2011 = getelementptr i8, ptr %2010, i64 -8
  %2012 = load double, ptr %2011, align 8, !tbaa !43
  br label %2030

2013:                                             ; preds = %1999
  %2014 = shl nsw i64 %2000, 1
  %2015 = or disjoint i64 %2014, 1
  %2016 = getelementptr inbounds double, ptr %1981, i64 %2015
  %2017 = load double, ptr %2016, align 8, !tbaa !43
  %2018 = icmp sgt i64 %2000, 0
  br i1 %2018, label %2019, label %2030

2019:                                             ; preds = %2013
  %2020 = getelementptr inbounds nuw i8, ptr %1981, i64 %2001
  %2021 = getelementptr i8, ptr %2020, i64 -8
  %2022 = load double, ptr %2021, align 8, !tbaa !43
  %2023 = getelementptr i8, ptr %2020, i64 -16
  %2024 = load double, ptr %2023, align 8, !tbaa !43
  %2025 = fsub double %1983, %2024
  %2026 = fsub double %2003, %2024
  %2027 = fdiv double %2025, %2026
  %2028 = fsub double %2017, %2022
  %2029 = tail call double @llvm.fmuladd.f64(double %2027, double %2028, double %2022)
  br label %2030

2030:                                             ; preds = %2019, %2013, %2008
  %2031 = phi double [ %2029, %2019 ], [ %2017, %2013 ], [ %2012, %2008 ]
  %2032 = getelementptr inbounds nuw double, ptr %5, i64 %1964
  store double %2031, ptr %2032, align 8, !tbaa !43
  br label %2033

2033:                                             ; preds = %2030, %1963
  %2034 = add nuw nsw i64 %1964, 1
  %2035 = icmp eq i64 %2034, 8
  br i1 %2035, label %2036, label %1963, !llvm.loop !71

2036:                                             ; preds = %2033
  %2037 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2038

2038:                                             ; preds = %1850, %2036
  %2039 = phi <8 x double> [ %2037, %2036 ], [ zeroinitializer, %1850 ]
  %2040 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %2041 = fcmp ogt <8 x double> %2040, zeroinitializer
  %2042 = sext <8 x i1> %2041 to <8 x i64>
  %2043 = xor <8 x i64> %2042, splat (i64 -1)
  %2044 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2045 = fcmp oeq <8 x double> %2044, splat (double 1.000000e+00)
  %2046 = fcmp oeq <8 x double> %2044, splat (double 2.000000e+00)
  %2047 = or <8 x i1> %2045, %2046
  %2048 = select <8 x i1> %2047, <8 x i64> %2043, <8 x i64> zeroinitializer
  %2049 = xor <8 x i64> %2048, %2042
  %2050 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %2051 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2052 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %2053 = icmp eq <8 x i64> %2049, splat (i64 -1)
  %2054 = select <8 x i1> %2053, <8 x double> %2052, <8 x double> %2051
  %2055 = bitcast <8 x i1> %2041 to i8
  %2056 = icmp eq i8 %2055, 0
  br i1 %2056, label %2088, label %2057

2057:                                             ; preds = %2038
  %2058 = select <8 x i1> %2041, <8 x double> %2039, <8 x double> %2054
  %2059 = fmul <8 x double> %2058, splat (double 0x3EB0C6F7A0B5ED8D)
  %2060 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2059)
  %2061 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2060)
  %2062 = fmul <8 x double> %2061, %2061
  %2063 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2061, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2062)
  %2064 = fadd <8 x double> %2063, splat (double 0x402DD4891DBECC6B)
  %2065 = fmul <8 x double> %2061, splat (double 0x40C77A698FD9BCCA)
  %2066 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2062, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2065)
  %2067 = fadd <8 x double> %2066, splat (double 0xC0B2D7440748F0B3)
  %2068 = fmul <8 x double> %2061, splat (double 0xC148A99584203885)
  %2069 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2062, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2068)
  %2070 = fadd <8 x double> %2069, splat (double 0x4118B9E59F2691E5)
  %2071 = fmul <8 x double> %2070, splat (double 2.000000e+00)
  %2072 = fneg <8 x double> %2067
  %2073 = fmul <8 x double> %2064, splat (double 4.000000e+00)
  %2074 = fneg <8 x double> %2070
  %2075 = fmul <8 x double> %2073, %2074
  %2076 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2067, <8 x double> %2067, <8 x double> %2075)
  %2077 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2076)
  %2078 = fsub <8 x double> %2072, %2077
  %2079 = fdiv <8 x double> %2071, %2078
  %2080 = fadd <8 x double> %2079, splat (double 0x408451671D164BD4)
  %2081 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2079, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2082 = fmul <8 x double> %2081, splat (double -4.000000e+00)
  %2083 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2080, <8 x double> %2080, <8 x double> %2082)
  %2084 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2083)
  %2085 = fsub <8 x double> %2080, %2084
  %2086 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2085, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2087 = select <8 x i1> %2041, <8 x double> %2086, <8 x double> %2050
  br label %2088

2088:                                             ; preds = %2057, %2038
  %2089 = phi <8 x double> [ %2058, %2057 ], [ %2054, %2038 ]
  %2090 = phi <8 x double> [ %2087, %2057 ], [ %2050, %2038 ]
  %2091 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2092 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2093 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %2094 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2095 = fmul <8 x double> %2093, %2094
  %2096 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2091, <8 x double> %2092, <8 x double> %2095)
  %2097 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2098 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2099 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2100 = fneg <8 x double> %2096
  %2101 = fmul <8 x double> %2099, %2100
  %2102 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2097, <8 x double> %2098, <8 x double> %2101)
  %2103 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2104 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2099, <8 x double> %2103, <8 x double> %2097)
  %2105 = fdiv <8 x double> %2102, %2104
  %2106 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2107 = select <8 x i1> %2053, <8 x double> %2106, <8 x double> %2051
  store <8 x double> %2107, ptr %202, align 64, !tbaa !26
  %2108 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %2109 = select <8 x i1> %2053, <8 x double> %2108, <8 x double> %2105
  store <8 x double> %2109, ptr %203, align 64, !tbaa !26
  store <8 x double> %2089, ptr %196, align 64, !tbaa !26
  %2110 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %2111 = and <8 x i64> %2110, %2048
  %2112 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2111)
  %2113 = icmp eq i64 %2112, 0
  br i1 %2113, label %2580, label %2114

2114:                                             ; preds = %2088
  %2115 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %2116 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2117 = fmul <8 x double> %2093, %2116
  %2118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2091, <8 x double> %2115, <8 x double> %2117)
  %2119 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2120 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2121 = fdiv <8 x double> %2119, %2120
  %2122 = fmul <8 x double> %2051, splat (double 3.000000e-01)
  %2123 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %2124 = fadd <8 x double> %2051, %2123
  %2125 = fadd <8 x double> %2124, splat (double 2.000000e+05)
  %2126 = fmul <8 x double> %2120, splat (double 2.870530e+02)
  %2127 = fdiv <8 x double> %2051, %2126
  %2128 = fcmp ogt <8 x double> %2089, %2122
  %2129 = select <8 x i1> %2128, <8 x double> %2089, <8 x double> %2122
  %2130 = fcmp olt <8 x double> %2129, %2125
  %2131 = select <8 x i1> %2130, <8 x double> %2129, <8 x double> %2125
  %2132 = icmp eq <8 x i64> %2048, zeroinitializer
  %2133 = select <8 x i1> %2132, <8 x double> %2089, <8 x double> %2131
  %2134 = fdiv <8 x double> %2107, splat (double 2.870530e+02)
  %2135 = fmul <8 x double> %2127, splat (double 2.000000e+00)
  %2136 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2135)
  br label %2137

2137:                                             ; preds = %2366, %2114
  %2138 = phi <8 x double> [ %2090, %2114 ], [ %2172, %2366 ]
  %2139 = phi <8 x double> [ %2122, %2114 ], [ %2523, %2366 ]
  %2140 = phi <8 x double> [ %2125, %2114 ], [ %2520, %2366 ]
  %2141 = phi <8 x i64> [ %2111, %2114 ], [ %2535, %2366 ]
  %2142 = phi i32 [ 0, %2114 ], [ %2540, %2366 ]
  %2143 = phi <8 x double> [ %2133, %2114 ], [ %2537, %2366 ]
  %2144 = fmul <8 x double> %2143, splat (double 0x3EB0C6F7A0B5ED8D)
  %2145 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2144)
  %2146 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2145)
  %2147 = fmul <8 x double> %2146, %2146
  %2148 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2146, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2147)
  %2149 = fadd <8 x double> %2148, splat (double 0x402DD4891DBECC6B)
  %2150 = fmul <8 x double> %2146, splat (double 0x40C77A698FD9BCCA)
  %2151 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2147, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2150)
  %2152 = fadd <8 x double> %2151, splat (double 0xC0B2D7440748F0B3)
  %2153 = fmul <8 x double> %2146, splat (double 0xC148A99584203885)
  %2154 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2147, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2153)
  %2155 = fadd <8 x double> %2154, splat (double 0x4118B9E59F2691E5)
  %2156 = fmul <8 x double> %2155, splat (double 2.000000e+00)
  %2157 = fneg <8 x double> %2152
  %2158 = fmul <8 x double> %2149, splat (double 4.000000e+00)
  %2159 = fneg <8 x double> %2155
  %2160 = fmul <8 x double> %2158, %2159
  %2161 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2152, <8 x double> %2152, <8 x double> %2160)
  %2162 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2161)
  %2163 = fsub <8 x double> %2157, %2162
  %2164 = fdiv <8 x double> %2156, %2163
  %2165 = fadd <8 x double> %2164, splat (double 0x408451671D164BD4)
  %2166 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2164, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2167 = fmul <8 x double> %2166, splat (double -4.000000e+00)
  %2168 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2165, <8 x double> %2165, <8 x double> %2167)
  %2169 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2168)
  %2170 = fsub <8 x double> %2165, %2169
  %2171 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2170, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2172 = select <8 x i1> %2132, <8 x double> %2138, <8 x double> %2171
  %2173 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2172, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2174 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2172, <8 x double> %2173, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2175 = load i64, ptr %166, align 8, !tbaa !20, !noalias !88
  %2176 = icmp sgt i64 %2175, 0
  br i1 %2176, label %2177, label %2366

2177:                                             ; preds = %2137
  %2178 = fdiv <8 x double> splat (double 1.000000e+00), %2174
  %2179 = fadd <8 x double> %2172, splat (double 1.000000e-09)
  br label %2180

2180:                                             ; preds = %2177, %2290
  %2181 = phi <8 x double> [ zeroinitializer, %2177 ], [ %2362, %2290 ]
  %2182 = phi <8 x double> [ zeroinitializer, %2177 ], [ %2361, %2290 ]
  %2183 = phi i64 [ 0, %2177 ], [ %2363, %2290 ]
  %2184 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !88
  %2185 = getelementptr inbounds nuw %struct.Piece, ptr %2184, i64 %2183
  %2186 = getelementptr inbounds nuw i8, ptr %2185, i64 5824
  %2187 = load <8 x double>, ptr %2186, align 64, !tbaa !26, !noalias !88
  %2188 = getelementptr inbounds nuw i8, ptr %2185, i64 5888
  %2189 = load <8 x double>, ptr %2188, align 64, !tbaa !26, !noalias !88
  %2190 = getelementptr inbounds nuw i8, ptr %2185, i64 7296
  %2191 = load <8 x double>, ptr %2190, align 64, !tbaa !26, !noalias !88
  %2192 = fcmp ule <8 x double> %2191, splat (double 1.000000e+00)
  %2193 = fmul <8 x double> %2172, %2189
  %2194 = fcmp ogt <8 x double> %2187, %2193
  %2195 = and <8 x i1> %2192, %2194
  %2196 = fneg <8 x double> %2189
  %2197 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2196, <8 x double> %2172, <8 x double> %2187)
  %2198 = fmul <8 x double> %2178, %2197
  %2199 = select <8 x i1> %2195, <8 x double> %2198, <8 x double> zeroinitializer
  %2200 = fmul <8 x double> %2178, %2196
  %2201 = fdiv <8 x double> %2187, %2189
  %2202 = select <8 x i1> %2195, <8 x double> %2172, <8 x double> %2201
  %2203 = getelementptr inbounds nuw i8, ptr %2185, i64 7488
  %2204 = load <8 x i64>, ptr %2203, align 64, !tbaa !26, !noalias !88
  %2205 = getelementptr inbounds nuw i8, ptr %2185, i64 2240
  %2206 = load <8 x double>, ptr %2205, align 64, !tbaa !26, !noalias !88
  %2207 = fcmp ule <8 x double> %2206, zeroinitializer
  %2208 = xor <8 x i1> %2192, splat (i1 true)
  %2209 = select <8 x i1> %2208, <8 x i1> splat (i1 true), <8 x i1> %2207
  %2210 = getelementptr inbounds nuw i8, ptr %2185, i64 5952
  %2211 = load <8 x double>, ptr %2210, align 64, !tbaa !26, !noalias !88
  %2212 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2196, <8 x double> %2211, <8 x double> %2187)
  %2213 = fcmp ogt <8 x double> %2212, zeroinitializer
  %2214 = select <8 x i1> %2213, <8 x double> %2212, <8 x double> zeroinitializer
  %2215 = fmul <8 x double> %2178, %2214
  %2216 = icmp eq <8 x i64> %2204, zeroinitializer
  %2217 = select <8 x i1> %2209, <8 x i1> splat (i1 true), <8 x i1> %2216
  %2218 = select <8 x i1> %2217, <8 x double> %2199, <8 x double> %2215
  %2219 = select <8 x i1> %2217, <8 x double> %2202, <8 x double> %2211
  %2220 = select <8 x i1> %2217, <8 x i1> %2195, <8 x i1> zeroinitializer
  %2221 = select <8 x i1> %2220, <8 x double> %2200, <8 x double> zeroinitializer
  %2222 = load i64, ptr %141, align 16, !tbaa !21, !noalias !91
  %2223 = sitofp i64 %2222 to double
  %2224 = insertelement <8 x double> poison, double %2223, i64 0
  %2225 = shufflevector <8 x double> %2224, <8 x double> poison, <8 x i32> zeroinitializer
  %2226 = icmp sgt i64 %2222, 0
  br i1 %2226, label %2227, label %2290

2227:                                             ; preds = %2180
  %2228 = getelementptr inbounds nuw i8, ptr %2185, i64 7608
  %2229 = load ptr, ptr %2228, align 8, !tbaa !76, !noalias !91
  %2230 = getelementptr inbounds nuw i8, ptr %2185, i64 7616
  %2231 = load ptr, ptr %2230, align 64, !tbaa !77, !noalias !91
  %2232 = getelementptr inbounds nuw i8, ptr %2185, i64 7552
  %2233 = load i64, ptr %2232, align 64, !tbaa !31, !noalias !91
  %2234 = getelementptr inbounds nuw i8, ptr %2185, i64 7632
  %2235 = getelementptr inbounds nuw i8, ptr %2185, i64 7624
  %2236 = getelementptr inbounds nuw i8, ptr %2185, i64 7640
  br label %2237

2237:                                             ; preds = %2227, %2272
  %2238 = phi <8 x i64> [ splat (i64 -1), %2227 ], [ %2252, %2272 ]
  %2239 = phi i64 [ %2222, %2227 ], [ %2243, %2272 ]
  %2240 = phi <8 x double> [ %2225, %2227 ], [ %2288, %2272 ]
  %2241 = phi <8 x double> [ zeroinitializer, %2227 ], [ %2284, %2272 ]
  %2242 = phi <8 x double> [ zeroinitializer, %2227 ], [ %2282, %2272 ]
  %2243 = add nsw i64 %2239, -1
  %2244 = getelementptr inbounds nuw <8 x double>, ptr %2229, i64 %2243
  %2245 = load <8 x double>, ptr %2244, align 64, !tbaa !26, !noalias !91
  %2246 = getelementptr inbounds nuw <8 x double>, ptr %2231, i64 %2243
  %2247 = load <8 x double>, ptr %2246, align 64, !tbaa !26, !noalias !91
  %2248 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2247, <8 x double> %2172, <8 x double> %2245)
  %2249 = fcmp ogt <8 x double> %2248, %2179
  %2250 = select <8 x i1> %2249, <8 x i64> %2238, <8 x i64> zeroinitializer
  %2251 = icmp sgt i64 %2239, %2233
  %2252 = select i1 %2251, <8 x i64> %2250, <8 x i64> zeroinitializer
  %2253 = icmp slt i64 %2239, %2222
  br i1 %2253, label %2254, label %2267

2254:                                             ; preds = %2237
  %2255 = load ptr, ptr %2234, align 16, !tbaa !74, !noalias !91
  %2256 = getelementptr inbounds nuw <8 x double>, ptr %2255, i64 %2239
  %2257 = load <8 x double>, ptr %2256, align 64, !tbaa !26, !noalias !91
  %2258 = fsub <8 x double> %2248, %2172
  %2259 = fmul <8 x double> %2258, %2257
  %2260 = icmp eq <8 x i64> %2252, %2238
  %2261 = select <8 x i1> %2260, <8 x double> zeroinitializer, <8 x double> %2259
  %2262 = fadd <8 x double> %2242, %2261
  %2263 = fadd <8 x double> %2247, splat (double -1.000000e+00)
  %2264 = fmul <8 x double> %2263, %2257
  %2265 = select <8 x i1> %2260, <8 x double> zeroinitializer, <8 x double> %2264
  %2266 = fadd <8 x double> %2241, %2265
  br label %2267

2267:                                             ; preds = %2254, %2237
  %2268 = phi <8 x double> [ %2262, %2254 ], [ %2242, %2237 ]
  %2269 = phi <8 x double> [ %2266, %2254 ], [ %2241, %2237 ]
  %2270 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2252)
  %2271 = icmp eq i64 %2270, 0
  br i1 %2271, label %2290, label %2272

2272:                                             ; preds = %2267
  %2273 = load ptr, ptr %2235, align 8, !tbaa !73, !noalias !91
  %2274 = getelementptr inbounds nuw <8 x double>, ptr %2273, i64 %2243
  %2275 = load <8 x double>, ptr %2274, align 64, !tbaa !26, !noalias !91
  %2276 = load ptr, ptr %2236, align 8, !tbaa !75, !noalias !91
  %2277 = getelementptr inbounds nuw <8 x double>, ptr %2276, i64 %2243
  %2278 = load <8 x double>, ptr %2277, align 64, !tbaa !26, !noalias !91
  %2279 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2278, <8 x double> %2172, <8 x double> %2275)
  %2280 = icmp eq <8 x i64> %2252, zeroinitializer
  %2281 = select <8 x i1> %2280, <8 x double> zeroinitializer, <8 x double> %2279
  %2282 = fadd <8 x double> %2268, %2281
  %2283 = select <8 x i1> %2280, <8 x double> zeroinitializer, <8 x double> %2278
  %2284 = fadd <8 x double> %2269, %2283
  %2285 = uitofp nneg i64 %2243 to double
  %2286 = insertelement <8 x double> poison, double %2285, i64 0
  %2287 = shufflevector <8 x double> %2286, <8 x double> poison, <8 x i32> zeroinitializer
  %2288 = select <8 x i1> %2280, <8 x double> %2240, <8 x double> %2287
  %2289 = icmp samesign ugt i64 %2239, 1
  br i1 %2289, label %2237, label %2290, !llvm.loop !94

2290:                                             ; preds = %2272, %2267, %2180
  %2291 = phi <8 x double> [ %2225, %2180 ], [ %2240, %2267 ], [ %2288, %2272 ]
  %2292 = phi <8 x double> [ zeroinitializer, %2180 ], [ %2268, %2267 ], [ %2282, %2272 ]
  %2293 = phi <8 x double> [ zeroinitializer, %2180 ], [ %2269, %2267 ], [ %2284, %2272 ]
  %2294 = getelementptr inbounds nuw i8, ptr %2185, i64 6080
  %2295 = load <8 x double>, ptr %2294, align 64, !tbaa !26, !noalias !88
  %2296 = getelementptr inbounds nuw i8, ptr %2185, i64 5504
  %2297 = load <8 x double>, ptr %2296, align 64, !tbaa !26, !noalias !88
  %2298 = getelementptr inbounds nuw i8, ptr %2185, i64 7040
  %2299 = load <8 x double>, ptr %2298, align 64, !tbaa !26, !noalias !88
  %2300 = fneg <8 x double> %2299
  %2301 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2295, <8 x double> %2297, <8 x double> %2300)
  %2302 = getelementptr inbounds nuw i8, ptr %2185, i64 6976
  %2303 = load <8 x double>, ptr %2302, align 64, !tbaa !26, !noalias !88
  %2304 = fadd <8 x double> %2295, %2303
  %2305 = getelementptr inbounds nuw i8, ptr %2185, i64 7360
  %2306 = load <8 x i64>, ptr %2305, align 64, !tbaa !26, !noalias !88
  %2307 = getelementptr inbounds nuw i8, ptr %2185, i64 7712
  %2308 = load ptr, ptr %2307, align 32, !tbaa !82, !noalias !88
  %2309 = load <8 x double>, ptr %2308, align 64, !tbaa !26, !noalias !88
  %2310 = fmul <8 x double> %2295, %2309
  %2311 = icmp eq <8 x i64> %2306, zeroinitializer
  %2312 = select <8 x i1> %2311, <8 x double> %2301, <8 x double> %2310
  %2313 = getelementptr inbounds nuw i8, ptr %2185, i64 7720
  %2314 = load ptr, ptr %2313, align 8, !tbaa !83, !noalias !88
  %2315 = load <8 x double>, ptr %2314, align 64, !tbaa !26, !noalias !88
  %2316 = fsub <8 x double> splat (double 1.000000e+00), %2315
  %2317 = fmul <8 x double> %2295, %2316
  %2318 = select <8 x i1> %2311, <8 x double> %2304, <8 x double> %2317
  %2319 = fneg <8 x double> %2318
  %2320 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2319, <8 x double> %2172, <8 x double> %2312)
  %2321 = fcmp olt <8 x double> %2291, %2225
  %2322 = and <8 x i1> %2192, %2321
  %2323 = fcmp ogt <8 x double> %2292, zeroinitializer
  %2324 = fcmp oge <8 x double> %2320, zeroinitializer
  %2325 = and <8 x i1> %2323, %2324
  %2326 = and <8 x i1> %2322, %2325
  %2327 = sext <8 x i1> %2326 to <8 x i64>
  %2328 = xor <8 x i64> %2327, splat (i64 -1)
  %2329 = fadd <8 x double> %2292, %2320
  %2330 = fcmp ogt <8 x double> %2329, zeroinitializer
  %2331 = select <8 x i1> %2330, <8 x i1> %2322, <8 x i1> zeroinitializer
  %2332 = select <8 x i1> %2331, <8 x i64> %2328, <8 x i64> zeroinitializer
  %2333 = or <8 x i64> %2332, %2327
  %2334 = fmul <8 x double> %2178, %2320
  %2335 = select <8 x i1> %2326, <8 x double> %2334, <8 x double> zeroinitializer
  %2336 = icmp eq <8 x i64> %2333, zeroinitializer
  %2337 = select <8 x i1> %2336, <8 x double> %2218, <8 x double> %2335
  %2338 = select <8 x i1> %2336, <8 x double> %2219, <8 x double> %2172
  %2339 = fsub <8 x double> %2293, %2318
  %2340 = fmul <8 x double> %2178, %2339
  %2341 = select <8 x i1> %2336, <8 x double> %2221, <8 x double> %2340
  %2342 = getelementptr inbounds nuw i8, ptr %2185, i64 5632
  store <8 x double> %2337, ptr %2342, align 64, !tbaa !26, !noalias !88
  %2343 = getelementptr inbounds nuw i8, ptr %2185, i64 5568
  store <8 x double> %2338, ptr %2343, align 64, !tbaa !26, !noalias !88
  %2344 = fmul <8 x double> %2178, %2292
  %2345 = fmul <8 x double> %2178, %2329
  %2346 = icmp eq <8 x i64> %2332, zeroinitializer
  %2347 = select <8 x i1> %2346, <8 x double> zeroinitializer, <8 x double> %2345
  %2348 = select <8 x i1> %2326, <8 x double> %2344, <8 x double> %2347
  %2349 = getelementptr inbounds nuw i8, ptr %2185, i64 5696
  store <8 x double> %2348, ptr %2349, align 64, !tbaa !26, !noalias !88
  %2350 = load i64, ptr %141, align 16, !tbaa !21, !noalias !88
  %2351 = sitofp i64 %2350 to double
  %2352 = insertelement <8 x double> poison, double %2351, i64 0
  %2353 = shufflevector <8 x double> %2352, <8 x double> poison, <8 x i32> zeroinitializer
  %2354 = select <8 x i1> %2336, <8 x double> %2353, <8 x double> %2291
  %2355 = getelementptr inbounds nuw i8, ptr %2185, i64 5760
  store <8 x double> %2354, ptr %2355, align 64, !tbaa !26, !noalias !88
  %2356 = getelementptr inbounds nuw i8, ptr %2185, i64 128
  %2357 = load <8 x double>, ptr %2356, align 64, !tbaa !26, !noalias !88
  %2358 = fadd <8 x double> %2337, %2348
  %2359 = fmul <8 x double> %2357, %2358
  %2360 = fmul <8 x double> %2357, %2341
  %2361 = fadd <8 x double> %2182, %2359
  %2362 = fadd <8 x double> %2181, %2360
  %2363 = add nuw nsw i64 %2183, 1
  %2364 = load i64, ptr %166, align 8, !tbaa !20, !noalias !88
  %2365 = icmp slt i64 %2363, %2364
  br i1 %2365, label %2180, label %2366, !llvm.loop !95

2366:                                             ; preds = %2290, %2137
  %2367 = phi <8 x double> [ zeroinitializer, %2137 ], [ %2361, %2290 ]
  %2368 = phi <8 x double> [ zeroinitializer, %2137 ], [ %2362, %2290 ]
  %2369 = fsub <8 x double> %2143, %2107
  %2370 = fcmp ogt <8 x double> %2369, zeroinitializer
  %2371 = select <8 x i1> %2370, <8 x double> %2369, <8 x double> zeroinitializer
  %2372 = fadd <8 x double> %2172, splat (double 2.731500e+02)
  %2373 = fdiv <8 x double> %2371, splat (double 4.615260e+02)
  %2374 = fadd <8 x double> %2134, %2373
  %2375 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2376 = fdiv <8 x double> %2374, %2375
  %2377 = fmul <8 x double> %2375, %2376
  %2378 = fdiv <8 x double> %2143, %2377
  %2379 = load <8 x double>, ptr %195, align 64, !tbaa !26, !noalias !96
  %2380 = fsub <8 x double> %2143, %2379
  %2381 = load <8 x double>, ptr %208, align 64, !tbaa !26, !noalias !96
  %2382 = fsub <8 x double> %2380, %2381
  %2383 = load <8 x double>, ptr %209, align 64, !tbaa !26, !noalias !96
  %2384 = load <8 x double>, ptr %160, align 64, !tbaa !26, !noalias !96
  %2385 = fcmp une <8 x double> %2384, splat (double 2.000000e+00)
  %2386 = load <8 x double>, ptr %210, align 64, !tbaa !26, !noalias !96
  %2387 = select <8 x i1> %2385, <8 x double> zeroinitializer, <8 x double> %2386
  %2388 = fadd <8 x double> %2383, %2387
  %2389 = fcmp ule <8 x double> %2380, zeroinitializer
  %2390 = fcmp ule <8 x double> %2388, zeroinitializer
  %2391 = or <8 x i1> %2389, %2390
  %2392 = fmul <8 x double> %2376, splat (double 2.000000e+00)
  %2393 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2392)
  %2394 = fmul <8 x double> %2393, %2388
  %2395 = fadd <8 x double> %2380, splat (double 2.000000e+02)
  %2396 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2395)
  %2397 = select <8 x i1> %2389, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2396
  %2398 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2380, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2399 = fmul <8 x double> %2398, %2394
  %2400 = fmul <8 x double> %2397, %2397
  %2401 = fmul <8 x double> %2397, %2400
  %2402 = fdiv <8 x double> %2399, %2401
  %2403 = fmul <8 x double> %2380, %2394
  %2404 = fdiv <8 x double> %2403, %2397
  %2405 = select <8 x i1> %2391, <8 x double> zeroinitializer, <8 x double> %2404
  %2406 = select <8 x i1> %2391, <8 x double> zeroinitializer, <8 x double> %2402
  %2407 = fcmp ule <8 x double> %2382, zeroinitializer
  %2408 = load <8 x double>, ptr %211, align 64, !tbaa !26, !noalias !96
  %2409 = fmul <8 x double> %2382, %2408
  %2410 = select <8 x i1> %2407, <8 x double> zeroinitializer, <8 x double> %2409
  %2411 = fadd <8 x double> %2410, %2405
  %2412 = select <8 x i1> %2407, <8 x double> zeroinitializer, <8 x double> %2408
  %2413 = fadd <8 x double> %2412, %2406
  %2414 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2415 = fsub <8 x double> %2379, %2143
  %2416 = fcmp ule <8 x double> %2415, zeroinitializer
  %2417 = fcmp ule <8 x double> %2414, zeroinitializer
  %2418 = or <8 x i1> %2416, %2417
  %2419 = fmul <8 x double> %2136, %2414
  %2420 = fadd <8 x double> %2415, splat (double 2.000000e+02)
  %2421 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2420)
  %2422 = select <8 x i1> %2416, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2421
  %2423 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2415, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2424 = fmul <8 x double> %2423, %2419
  %2425 = fmul <8 x double> %2422, %2422
  %2426 = fmul <8 x double> %2422, %2425
  %2427 = fdiv <8 x double> %2424, %2426
  %2428 = fmul <8 x double> %2415, %2419
  %2429 = fdiv <8 x double> %2428, %2422
  %2430 = load <8 x double>, ptr %171, align 64, !tbaa !26, !noalias !99
  %2431 = load <8 x double>, ptr %197, align 64, !tbaa !26, !noalias !99
  %2432 = load <8 x double>, ptr %172, align 64, !tbaa !26, !noalias !99
  %2433 = load <8 x double>, ptr %198, align 64, !tbaa !26, !noalias !99
  %2434 = fmul <8 x double> %2432, %2433
  %2435 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2430, <8 x double> %2431, <8 x double> %2434)
  %2436 = load <8 x double>, ptr %201, align 64, !tbaa !26, !noalias !99
  %2437 = load <8 x double>, ptr %170, align 64, !tbaa !26, !noalias !99
  %2438 = load <8 x double>, ptr %199, align 64, !tbaa !26, !noalias !99
  %2439 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2436, <8 x double> %2437, <8 x double> %2438)
  %2440 = load <8 x double>, ptr %200, align 64, !tbaa !26, !noalias !99
  %2441 = fneg <8 x double> %2435
  %2442 = fmul <8 x double> %2436, %2441
  %2443 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2438, <8 x double> %2440, <8 x double> %2442)
  %2444 = fdiv <8 x double> %2443, %2439
  %2445 = fcmp ogt <8 x double> %2371, splat (double 2.000000e+03)
  %2446 = select <8 x i1> %2445, <8 x double> %2371, <8 x double> splat (double 2.000000e+03)
  %2447 = fmul <8 x double> %2446, splat (double 0x3EB0C6F7A0B5ED8D)
  %2448 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2447)
  %2449 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2448)
  %2450 = fmul <8 x double> %2449, %2449
  %2451 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2449, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2450)
  %2452 = fadd <8 x double> %2451, splat (double 0x402DD4891DBECC6B)
  %2453 = fmul <8 x double> %2449, splat (double 0x40C77A698FD9BCCA)
  %2454 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2450, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2453)
  %2455 = fadd <8 x double> %2454, splat (double 0xC0B2D7440748F0B3)
  %2456 = fmul <8 x double> %2449, splat (double 0xC148A99584203885)
  %2457 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2450, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2456)
  %2458 = fadd <8 x double> %2457, splat (double 0x4118B9E59F2691E5)
  %2459 = fmul <8 x double> %2458, splat (double 2.000000e+00)
  %2460 = fneg <8 x double> %2455
  %2461 = fmul <8 x double> %2452, splat (double 4.000000e+00)
  %2462 = fneg <8 x double> %2458
  %2463 = fmul <8 x double> %2461, %2462
  %2464 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2455, <8 x double> %2455, <8 x double> %2463)
  %2465 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2464)
  %2466 = fsub <8 x double> %2460, %2465
  %2467 = fdiv <8 x double> %2459, %2466
  %2468 = fadd <8 x double> %2467, splat (double 0x408451671D164BD4)
  %2469 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2467, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2470 = fmul <8 x double> %2469, splat (double -4.000000e+00)
  %2471 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2468, <8 x double> %2468, <8 x double> %2470)
  %2472 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2471)
  %2473 = fsub <8 x double> %2468, %2472
  %2474 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2473, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2475 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2474, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2476 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2474, <8 x double> %2475, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2477 = fadd <8 x double> %2474, splat (double 2.731500e+02)
  %2478 = fcmp ule <8 x double> %2474, %2444
  %2479 = load <8 x double>, ptr %213, align 64, !tbaa !26, !noalias !99
  %2480 = fmul <8 x double> %2439, %2479
  %2481 = fadd <8 x double> %2439, %2479
  %2482 = fdiv <8 x double> %2480, %2481
  %2483 = fdiv <8 x double> %2482, %2476
  %2484 = fmul <8 x double> %2477, splat (double 4.615260e+02)
  %2485 = fmul <8 x double> %2446, %2476
  %2486 = fmul <8 x double> %2474, %2479
  %2487 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2444, <8 x double> %2439, <8 x double> %2486)
  %2488 = fdiv <8 x double> %2487, %2481
  %2489 = select <8 x i1> %2478, <8 x double> %2444, <8 x double> %2488
  store <8 x double> %2489, ptr %203, align 64, !tbaa !26, !noalias !99
  %2490 = fsub <8 x double> %2474, %2444
  %2491 = fmul <8 x double> %2490, %2483
  %2492 = select <8 x i1> %2478, <8 x double> zeroinitializer, <8 x double> %2491
  %2493 = fmul <8 x double> %2372, splat (double 4.615260e+02)
  %2494 = fmul <8 x double> %2372, %2493
  %2495 = fmul <8 x double> %2143, %2174
  %2496 = fdiv <8 x double> %2494, %2495
  %2497 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2437, <8 x double> %2143, <8 x double> %2118)
  %2498 = fsub <8 x double> %2367, %2492
  %2499 = fmul <8 x double> %2498, splat (double -4.615260e+02)
  %2500 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2121, <8 x double> %2497, <8 x double> %2499)
  %2501 = fmul <8 x double> %2429, splat (double -2.870530e+02)
  %2502 = select <8 x i1> %2418, <8 x double> splat (double -0.000000e+00), <8 x double> %2501
  %2503 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2378, <8 x double> %2411, <8 x double> %2502)
  %2504 = fadd <8 x double> %2503, %2500
  %2505 = fneg <8 x double> %2477
  %2506 = fmul <8 x double> %2484, %2505
  %2507 = fdiv <8 x double> %2506, %2485
  %2508 = fmul <8 x double> %2507, %2483
  %2509 = select <8 x i1> %2478, <8 x double> splat (double -0.000000e+00), <8 x double> %2508
  %2510 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2368, <8 x double> %2496, <8 x double> %2509)
  %2511 = fmul <8 x double> %2510, splat (double -4.615260e+02)
  %2512 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2121, <8 x double> %2437, <8 x double> %2511)
  %2513 = fmul <8 x double> %2427, splat (double 2.870530e+02)
  %2514 = select <8 x i1> %2418, <8 x double> zeroinitializer, <8 x double> %2513
  %2515 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2378, <8 x double> %2413, <8 x double> %2514)
  %2516 = fadd <8 x double> %2515, %2512
  %2517 = fcmp ule <8 x double> %2504, zeroinitializer
  %2518 = fcmp olt <8 x double> %2140, %2143
  %2519 = select <8 x i1> %2517, <8 x i1> splat (i1 true), <8 x i1> %2518
  %2520 = select <8 x i1> %2519, <8 x double> %2140, <8 x double> %2143
  %2521 = fcmp ogt <8 x double> %2139, %2143
  %2522 = select <8 x i1> %2521, <8 x double> %2139, <8 x double> %2143
  %2523 = select <8 x i1> %2517, <8 x double> %2522, <8 x double> %2139
  %2524 = fdiv <8 x double> %2504, %2516
  %2525 = fsub <8 x double> %2143, %2524
  %2526 = fcmp uge <8 x double> %2523, %2525
  %2527 = fcmp uge <8 x double> %2525, %2520
  %2528 = or <8 x i1> %2526, %2527
  %2529 = fadd <8 x double> %2523, %2520
  %2530 = fmul <8 x double> %2529, splat (double 5.000000e-01)
  %2531 = select <8 x i1> %2528, <8 x double> %2530, <8 x double> %2525
  %2532 = fsub <8 x double> %2531, %2143
  %2533 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2532)
  %2534 = fcmp oge <8 x double> %2533, splat (double 2.000000e-01)
  %2535 = select <8 x i1> %2534, <8 x i64> %2141, <8 x i64> zeroinitializer
  %2536 = icmp eq <8 x i64> %2535, zeroinitializer
  %2537 = select <8 x i1> %2536, <8 x double> %2143, <8 x double> %2531
  %2538 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2535)
  %2539 = icmp ne i64 %2538, 0
  %2540 = add nuw nsw i32 %2142, 1
  %2541 = icmp samesign ult i32 %2142, 59
  %2542 = select i1 %2539, i1 %2541, i1 false
  br i1 %2542, label %2137, label %2543, !llvm.loop !102

2543:                                             ; preds = %2366
  %2544 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2545 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %2546 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %2547 = load <8 x double>, ptr %215, align 64, !tbaa !26
  %2548 = fmul <8 x double> %2546, %2547
  %2549 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2544, <8 x double> %2545, <8 x double> %2548)
  %2550 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2551 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2552 = fsub <8 x double> %2551, %2537
  %2553 = fcmp ule <8 x double> %2552, zeroinitializer
  %2554 = fcmp ule <8 x double> %2550, zeroinitializer
  %2555 = or <8 x i1> %2554, %2553
  %2556 = fmul <8 x double> %2136, %2550
  %2557 = fadd <8 x double> %2552, splat (double 2.000000e+02)
  %2558 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2557)
  %2559 = select <8 x i1> %2553, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2558
  %2560 = fmul <8 x double> %2556, %2552
  %2561 = fdiv <8 x double> %2560, %2559
  %2562 = fmul <8 x double> %2561, splat (double 2.870530e+02)
  %2563 = select <8 x i1> %2555, <8 x double> zeroinitializer, <8 x double> %2562
  %2564 = fdiv <8 x double> %2563, %2121
  %2565 = fsub <8 x double> %2564, %2549
  %2566 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2567 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2568 = fmul <8 x double> %2376, %2567
  %2569 = fdiv <8 x double> %2411, %2568
  %2570 = fadd <8 x double> %2566, %2569
  %2571 = fdiv <8 x double> %2565, %2570
  %2572 = fcmp ogt <8 x double> %2571, zeroinitializer
  %2573 = select <8 x i1> %2572, <8 x double> %2571, <8 x double> zeroinitializer
  %2574 = fcmp olt <8 x double> %2573, %2537
  %2575 = select <8 x i1> %2574, <8 x double> %2573, <8 x double> %2537
  %2576 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2577 = select <8 x i1> %2132, <8 x double> %2576, <8 x double> %2575
  store <8 x double> %2577, ptr %202, align 64, !tbaa !26
  %2578 = select <8 x i1> %2132, <8 x double> %2109, <8 x double> %2489
  store <8 x double> %2578, ptr %203, align 64, !tbaa !26
  store <8 x double> %2537, ptr %196, align 64, !tbaa !26
  store <8 x double> %2172, ptr %216, align 64, !tbaa !26
  %2579 = load i64, ptr %166, align 8, !tbaa !20
  br label %2749

2580:                                             ; preds = %2088
  store <8 x double> %2090, ptr %216, align 64, !tbaa !26
  %2581 = icmp sgt i64 %1852, 0
  br i1 %2581, label %2582, label %2752

2582:                                             ; preds = %2580
  %2583 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2090, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2584 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2090, <8 x double> %2583, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2585 = fdiv <8 x double> splat (double 1.000000e+00), %2584
  %2586 = fadd <8 x double> %2090, splat (double 1.000000e-09)
  br label %2587

2587:                                             ; preds = %2582, %2684
  %2588 = phi i64 [ 0, %2582 ], [ %2746, %2684 ]
  %2589 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !103
  %2590 = getelementptr inbounds nuw %struct.Piece, ptr %2589, i64 %2588
  %2591 = getelementptr inbounds nuw i8, ptr %2590, i64 5824
  %2592 = load <8 x double>, ptr %2591, align 64, !tbaa !26, !noalias !103
  %2593 = getelementptr inbounds nuw i8, ptr %2590, i64 5888
  %2594 = load <8 x double>, ptr %2593, align 64, !tbaa !26, !noalias !103
  %2595 = getelementptr inbounds nuw i8, ptr %2590, i64 7296
  %2596 = load <8 x double>, ptr %2595, align 64, !tbaa !26, !noalias !103
  %2597 = fcmp ule <8 x double> %2596, splat (double 1.000000e+00)
  %2598 = fmul <8 x double> %2090, %2594
  %2599 = fcmp ogt <8 x double> %2592, %2598
  %2600 = and <8 x i1> %2597, %2599
  %2601 = fneg <8 x double> %2594
  %2602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2601, <8 x double> %2090, <8 x double> %2592)
  %2603 = fmul <8 x double> %2585, %2602
  %2604 = select <8 x i1> %2600, <8 x double> %2603, <8 x double> zeroinitializer
  %2605 = fdiv <8 x double> %2592, %2594
  %2606 = select <8 x i1> %2600, <8 x double> %2090, <8 x double> %2605
  %2607 = getelementptr inbounds nuw i8, ptr %2590, i64 7488
  %2608 = load <8 x i64>, ptr %2607, align 64, !tbaa !26, !noalias !103
  %2609 = getelementptr inbounds nuw i8, ptr %2590, i64 2240
  %2610 = load <8 x double>, ptr %2609, align 64, !tbaa !26, !noalias !103
  %2611 = fcmp ule <8 x double> %2610, zeroinitializer
  %2612 = xor <8 x i1> %2597, splat (i1 true)
  %2613 = select <8 x i1> %2612, <8 x i1> splat (i1 true), <8 x i1> %2611
  %2614 = getelementptr inbounds nuw i8, ptr %2590, i64 5952
  %2615 = load <8 x double>, ptr %2614, align 64, !tbaa !26, !noalias !103
  %2616 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2601, <8 x double> %2615, <8 x double> %2592)
  %2617 = fcmp ogt <8 x double> %2616, zeroinitializer
  %2618 = select <8 x i1> %2617, <8 x double> %2616, <8 x double> zeroinitializer
  %2619 = fmul <8 x double> %2585, %2618
  %2620 = icmp eq <8 x i64> %2608, zeroinitializer
  %2621 = select <8 x i1> %2613, <8 x i1> splat (i1 true), <8 x i1> %2620
  %2622 = select <8 x i1> %2621, <8 x double> %2604, <8 x double> %2619
  %2623 = select <8 x i1> %2621, <8 x double> %2606, <8 x double> %2615
  %2624 = load i64, ptr %141, align 16, !tbaa !21, !noalias !106
  %2625 = sitofp i64 %2624 to double
  %2626 = insertelement <8 x double> poison, double %2625, i64 0
  %2627 = shufflevector <8 x double> %2626, <8 x double> poison, <8 x i32> zeroinitializer
  %2628 = icmp sgt i64 %2624, 0
  br i1 %2628, label %2629, label %2684

2629:                                             ; preds = %2587
  %2630 = getelementptr inbounds nuw i8, ptr %2590, i64 7608
  %2631 = load ptr, ptr %2630, align 8, !tbaa !76, !noalias !106
  %2632 = getelementptr inbounds nuw i8, ptr %2590, i64 7616
  %2633 = load ptr, ptr %2632, align 64, !tbaa !77, !noalias !106
  %2634 = getelementptr inbounds nuw i8, ptr %2590, i64 7552
  %2635 = load i64, ptr %2634, align 64, !tbaa !31, !noalias !106
  %2636 = getelementptr inbounds nuw i8, ptr %2590, i64 7632
  %2637 = getelementptr inbounds nuw i8, ptr %2590, i64 7624
  %2638 = getelementptr inbounds nuw i8, ptr %2590, i64 7640
  br label %2639

2639:                                             ; preds = %2629, %2668
  %2640 = phi <8 x i64> [ splat (i64 -1), %2629 ], [ %2653, %2668 ]
  %2641 = phi i64 [ %2624, %2629 ], [ %2644, %2668 ]
  %2642 = phi <8 x double> [ %2627, %2629 ], [ %2682, %2668 ]
  %2643 = phi <8 x double> [ zeroinitializer, %2629 ], [ %2678, %2668 ]
  %2644 = add nsw i64 %2641, -1
  %2645 = getelementptr inbounds nuw <8 x double>, ptr %2631, i64 %2644
  %2646 = load <8 x double>, ptr %2645, align 64, !tbaa !26, !noalias !106
  %2647 = getelementptr inbounds nuw <8 x double>, ptr %2633, i64 %2644
  %2648 = load <8 x double>, ptr %2647, align 64, !tbaa !26, !noalias !106
  %2649 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2648, <8 x double> %2090, <8 x double> %2646)
  %2650 = fcmp ogt <8 x double> %2649, %2586
  %2651 = select <8 x i1> %2650, <8 x i64> %2640, <8 x i64> zeroinitializer
  %2652 = icmp sgt i64 %2641, %2635
  %2653 = select i1 %2652, <8 x i64> %2651, <8 x i64> zeroinitializer
  %2654 = icmp slt i64 %2641, %2624
  br i1 %2654, label %2655, label %2664

2655:                                             ; preds = %2639
  %2656 = load ptr, ptr %2636, align 16, !tbaa !74, !noalias !106
  %2657 = getelementptr inbounds nuw <8 x double>, ptr %2656, i64 %2641
  %2658 = load <8 x double>, ptr %2657, align 64, !tbaa !26, !noalias !106
  %2659 = fsub <8 x double> %2649, %2090
  %2660 = fmul <8 x double> %2659, %2658
  %2661 = icmp eq <8 x i64> %2653, %2640
  %2662 = select <8 x i1> %2661, <8 x double> zeroinitializer, <8 x double> %2660
  %2663 = fadd <8 x double> %2643, %2662
  br label %2664

2664:                                             ; preds = %2655, %2639
  %2665 = phi <8 x double> [ %2663, %2655 ], [ %2643, %2639 ]
  %2666 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2653)
  %2667 = icmp eq i64 %2666, 0
  br i1 %2667, label %2684, label %2668

2668:                                             ; preds = %2664
  %2669 = load ptr, ptr %2637, align 8, !tbaa !73, !noalias !106
  %2670 = getelementptr inbounds nuw <8 x double>, ptr %2669, i64 %2644
  %2671 = load <8 x double>, ptr %2670, align 64, !tbaa !26, !noalias !106
  %2672 = load ptr, ptr %2638, align 8, !tbaa !75, !noalias !106
  %2673 = getelementptr inbounds nuw <8 x double>, ptr %2672, i64 %2644
  %2674 = load <8 x double>, ptr %2673, align 64, !tbaa !26, !noalias !106
  %2675 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2674, <8 x double> %2090, <8 x double> %2671)
  %2676 = icmp eq <8 x i64> %2653, zeroinitializer
  %2677 = select <8 x i1> %2676, <8 x double> zeroinitializer, <8 x double> %2675
  %2678 = fadd <8 x double> %2665, %2677
  %2679 = uitofp nneg i64 %2644 to double
  %2680 = insertelement <8 x double> poison, double %2679, i64 0
  %2681 = shufflevector <8 x double> %2680, <8 x double> poison, <8 x i32> zeroinitializer
  %2682 = select <8 x i1> %2676, <8 x double> %2642, <8 x double> %2681
  %2683 = icmp samesign ugt i64 %2641, 1
  br i1 %2683, label %2639, label %2684, !llvm.loop !94

2684:                                             ; preds = %2668, %2664, %2587
  %2685 = phi <8 x double> [ %2627, %2587 ], [ %2642, %2664 ], [ %2682, %2668 ]
  %2686 = phi <8 x double> [ zeroinitializer, %2587 ], [ %2665, %2664 ], [ %2678, %2668 ]
  %2687 = getelementptr inbounds nuw i8, ptr %2590, i64 6080
  %2688 = load <8 x double>, ptr %2687, align 64, !tbaa !26, !noalias !103
  %2689 = getelementptr inbounds nuw i8, ptr %2590, i64 5504
  %2690 = load <8 x double>, ptr %2689, align 64, !tbaa !26, !noalias !103
  %2691 = getelementptr inbounds nuw i8, ptr %2590, i64 7040
  %2692 = load <8 x double>, ptr %2691, align 64, !tbaa !26, !noalias !103
  %2693 = fneg <8 x double> %2692
  %2694 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2688, <8 x double> %2690, <8 x double> %2693)
  %2695 = getelementptr inbounds nuw i8, ptr %2590, i64 6976
  %2696 = load <8 x double>, ptr %2695, align 64, !tbaa !26, !noalias !103
  %2697 = fadd <8 x double> %2688, %2696
  %2698 = getelementptr inbounds nuw i8, ptr %2590, i64 7360
  %2699 = load <8 x i64>, ptr %2698, align 64, !tbaa !26, !noalias !103
  %2700 = getelementptr inbounds nuw i8, ptr %2590, i64 7712
  %2701 = load ptr, ptr %2700, align 32, !tbaa !82, !noalias !103
  %2702 = load <8 x double>, ptr %2701, align 64, !tbaa !26, !noalias !103
  %2703 = fmul <8 x double> %2688, %2702
  %2704 = icmp eq <8 x i64> %2699, zeroinitializer
  %2705 = select <8 x i1> %2704, <8 x double> %2694, <8 x double> %2703
  %2706 = getelementptr inbounds nuw i8, ptr %2590, i64 7720
  %2707 = load ptr, ptr %2706, align 8, !tbaa !83, !noalias !103
  %2708 = load <8 x double>, ptr %2707, align 64, !tbaa !26, !noalias !103
  %2709 = fsub <8 x double> splat (double 1.000000e+00), %2708
  %2710 = fmul <8 x double> %2688, %2709
  %2711 = select <8 x i1> %2704, <8 x double> %2697, <8 x double> %2710
  %2712 = fneg <8 x double> %2711
  %2713 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2712, <8 x double> %2090, <8 x double> %2705)
  %2714 = fcmp olt <8 x double> %2685, %2627
  %2715 = and <8 x i1> %2597, %2714
  %2716 = fcmp ogt <8 x double> %2686, zeroinitializer
  %2717 = fcmp oge <8 x double> %2713, zeroinitializer
  %2718 = and <8 x i1> %2716, %2717
  %2719 = and <8 x i1> %2715, %2718
  %2720 = sext <8 x i1> %2719 to <8 x i64>
  %2721 = xor <8 x i64> %2720, splat (i64 -1)
  %2722 = fadd <8 x double> %2686, %2713
  %2723 = fcmp ogt <8 x double> %2722, zeroinitializer
  %2724 = select <8 x i1> %2723, <8 x i1> %2715, <8 x i1> zeroinitializer
  %2725 = select <8 x i1> %2724, <8 x i64> %2721, <8 x i64> zeroinitializer
  %2726 = or <8 x i64> %2725, %2720
  %2727 = fmul <8 x double> %2585, %2713
  %2728 = select <8 x i1> %2719, <8 x double> %2727, <8 x double> zeroinitializer
  %2729 = icmp eq <8 x i64> %2726, zeroinitializer
  %2730 = select <8 x i1> %2729, <8 x double> %2622, <8 x double> %2728
  %2731 = select <8 x i1> %2729, <8 x double> %2623, <8 x double> %2090
  %2732 = getelementptr inbounds nuw i8, ptr %2590, i64 5632
  store <8 x double> %2730, ptr %2732, align 64, !tbaa !26, !noalias !103
  %2733 = getelementptr inbounds nuw i8, ptr %2590, i64 5568
  store <8 x double> %2731, ptr %2733, align 64, !tbaa !26, !noalias !103
  %2734 = fmul <8 x double> %2585, %2686
  %2735 = fmul <8 x double> %2585, %2722
  %2736 = icmp eq <8 x i64> %2725, zeroinitializer
  %2737 = select <8 x i1> %2736, <8 x double> zeroinitializer, <8 x double> %2735
  %2738 = select <8 x i1> %2719, <8 x double> %2734, <8 x double> %2737
  %2739 = getelementptr inbounds nuw i8, ptr %2590, i64 5696
  store <8 x double> %2738, ptr %2739, align 64, !tbaa !26, !noalias !103
  %2740 = load i64, ptr %141, align 16, !tbaa !21, !noalias !103
  %2741 = sitofp i64 %2740 to double
  %2742 = insertelement <8 x double> poison, double %2741, i64 0
  %2743 = shufflevector <8 x double> %2742, <8 x double> poison, <8 x i32> zeroinitializer
  %2744 = select <8 x i1> %2729, <8 x double> %2743, <8 x double> %2685
  %2745 = getelementptr inbounds nuw i8, ptr %2590, i64 5760
  store <8 x double> %2744, ptr %2745, align 64, !tbaa !26, !noalias !103
  %2746 = add nuw nsw i64 %2588, 1
  %2747 = load i64, ptr %166, align 8, !tbaa !20, !noalias !103
  %2748 = icmp slt i64 %2746, %2747
  br i1 %2748, label %2587, label %2749, !llvm.loop !95

2749:                                             ; preds = %2684, %2543
  %2750 = phi i64 [ %2579, %2543 ], [ %2747, %2684 ]
  %2751 = icmp sgt i64 %2750, 0
  br i1 %2751, label %2869, label %2752

2752:                                             ; preds = %2749, %2580
  %2753 = phi i64 [ %2750, %2749 ], [ %1852, %2580 ]
  %2754 = load <8 x double>, ptr %173, align 64, !tbaa !26
  br label %2782

2755:                                             ; preds = %2941
  %2756 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %2757 = icmp sgt i64 %2965, 0
  br i1 %2757, label %2758, label %2782

2758:                                             ; preds = %2755
  %2759 = load ptr, ptr %151, align 8, !tbaa !28
  br label %2760

2760:                                             ; preds = %2758, %2760
  %2761 = phi <8 x double> [ zeroinitializer, %2758 ], [ %2774, %2760 ]
  %2762 = phi <8 x double> [ zeroinitializer, %2758 ], [ %2779, %2760 ]
  %2763 = phi i64 [ 0, %2758 ], [ %2780, %2760 ]
  %2764 = getelementptr inbounds nuw %struct.Piece, ptr %2759, i64 %2763
  %2765 = getelementptr inbounds nuw i8, ptr %2764, i64 7488
  %2766 = load <8 x i64>, ptr %2765, align 64, !tbaa !26
  %2767 = getelementptr inbounds nuw i8, ptr %2764, i64 128
  %2768 = load <8 x double>, ptr %2767, align 64, !tbaa !26
  %2769 = getelementptr inbounds nuw i8, ptr %2764, i64 6336
  %2770 = load <8 x double>, ptr %2769, align 64, !tbaa !26
  %2771 = fmul <8 x double> %2768, %2770
  %2772 = icmp eq <8 x i64> %2766, zeroinitializer
  %2773 = select <8 x i1> %2772, <8 x double> %2771, <8 x double> zeroinitializer
  %2774 = fadd <8 x double> %2761, %2773
  %2775 = getelementptr inbounds nuw i8, ptr %2764, i64 6208
  %2776 = load <8 x double>, ptr %2775, align 64, !tbaa !26
  %2777 = fmul <8 x double> %2768, %2776
  %2778 = select <8 x i1> %2772, <8 x double> %2777, <8 x double> zeroinitializer
  %2779 = fadd <8 x double> %2762, %2778
  %2780 = add nuw nsw i64 %2763, 1
  %2781 = icmp eq i64 %2780, %2965
  br i1 %2781, label %2782, label %2760, !llvm.loop !109

2782:                                             ; preds = %2760, %2752, %2755
  %2783 = phi i1 [ false, %2755 ], [ false, %2752 ], [ true, %2760 ]
  %2784 = phi <8 x double> [ %2756, %2755 ], [ %2754, %2752 ], [ %2756, %2760 ]
  %2785 = phi i64 [ %2965, %2755 ], [ %2753, %2752 ], [ %2965, %2760 ]
  %2786 = phi <8 x double> [ zeroinitializer, %2755 ], [ zeroinitializer, %2752 ], [ %2779, %2760 ]
  %2787 = phi <8 x double> [ zeroinitializer, %2755 ], [ zeroinitializer, %2752 ], [ %2774, %2760 ]
  %2788 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %2789 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2790 = fsub <8 x double> %2784, %2789
  %2791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2788, <8 x double> %2790, <8 x double> %2787)
  %2792 = fadd <8 x double> %2786, %2788
  store <8 x double> %2791, ptr %178, align 64, !tbaa !26
  %2793 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2794 = fcmp ule <8 x double> %2793, zeroinitializer
  %2795 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %2796 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2793, <8 x double> splat (double 5.000000e-01), <8 x double> %2795)
  %2797 = fsub <8 x double> %2796, %2784
  %2798 = fcmp ogt <8 x double> %2793, splat (double 1.000000e-30)
  %2799 = select <8 x i1> %2798, <8 x double> %2793, <8 x double> splat (double 1.000000e-30)
  %2800 = fdiv <8 x double> %2797, %2799
  %2801 = fcmp ogt <8 x double> %2800, zeroinitializer
  %2802 = select <8 x i1> %2801, <8 x double> %2800, <8 x double> zeroinitializer
  %2803 = fcmp olt <8 x double> %2802, splat (double 1.000000e+00)
  %2804 = select <8 x i1> %2803, <8 x double> %2802, <8 x double> splat (double 1.000000e+00)
  %2805 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2806 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %2807 = icmp eq <8 x i64> %2806, zeroinitializer
  %2808 = select <8 x i1> %2807, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %2809 = select <8 x i1> %2794, <8 x double> %2808, <8 x double> %2804
  %2810 = fmul <8 x double> %2805, %2809
  %2811 = fcmp ule <8 x double> %2810, zeroinitializer
  %2812 = fcmp uge <8 x double> %2810, %2805
  %2813 = or <8 x i1> %2811, %2812
  %2814 = or <8 x i1> %2794, %2813
  %2815 = fdiv <8 x double> %2805, %2799
  %2816 = select <8 x i1> %2814, <8 x double> zeroinitializer, <8 x double> %2815
  %2817 = fadd <8 x double> %2792, %2816
  %2818 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2819 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %2820 = fmul <8 x double> %2784, %2819
  %2821 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %2822 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2823 = fmul <8 x double> %2822, splat (double 5.000000e-01)
  %2824 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2823, <8 x double> %2784, <8 x double> %2821)
  %2825 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %2826 = fmul <8 x double> %2784, %2825
  %2827 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2820, <8 x double> %2824, <8 x double> %2826)
  %2828 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2829 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %2830 = fmul <8 x double> %2819, %2829
  %2831 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2823, <8 x double> %2829, <8 x double> %2821)
  %2832 = fmul <8 x double> %2825, %2829
  %2833 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2830, <8 x double> %2831, <8 x double> %2832)
  %2834 = fmul <8 x double> %2828, %2833
  %2835 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2818, <8 x double> %2827, <8 x double> %2834)
  %2836 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %2837 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2838 = fmul <8 x double> %2819, %2837
  %2839 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2823, <8 x double> %2837, <8 x double> %2821)
  %2840 = fmul <8 x double> %2825, %2837
  %2841 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2838, <8 x double> %2839, <8 x double> %2840)
  %2842 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2836, <8 x double> %2841, <8 x double> %2835)
  %2843 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2822, <8 x double> %2784, <8 x double> %2821)
  %2844 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2819, <8 x double> %2843, <8 x double> %2825)
  %2845 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2846 = fcmp une <8 x double> %2845, zeroinitializer
  %2847 = fadd <8 x double> %2791, %2842
  %2848 = fsub <8 x double> %2847, %2810
  %2849 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2818, <8 x double> %2844, <8 x double> %2817)
  %2850 = fdiv <8 x double> %2848, %2849
  %2851 = fsub <8 x double> %2784, %2850
  %2852 = select <8 x i1> %2846, <8 x double> %2784, <8 x double> %2851
  store <8 x double> %2852, ptr %173, align 64, !tbaa !26
  %2853 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %2854 = fneg <8 x double> %2828
  %2855 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2854, <8 x double> %2853, <8 x double> %2810)
  %2856 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %2857 = fneg <8 x double> %2836
  %2858 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2857, <8 x double> %2856, <8 x double> %2855)
  %2859 = fdiv <8 x double> %2858, %2818
  %2860 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %2861 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2854, <8 x double> %2860, <8 x double> %2791)
  %2862 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %2863 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2857, <8 x double> %2862, <8 x double> %2861)
  %2864 = fdiv <8 x double> %2863, %2818
  %2865 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %2866 = select <8 x i1> %2846, <8 x double> %2865, <8 x double> %2859
  store <8 x double> %2866, ptr %223, align 64, !tbaa !26
  %2867 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %2868 = select <8 x i1> %2846, <8 x double> %2867, <8 x double> %2864
  store <8 x double> %2868, ptr %224, align 64, !tbaa !26
  br i1 %2783, label %2967, label %3230

2869:                                             ; preds = %2749, %2941
  %2870 = phi i64 [ %2964, %2941 ], [ 0, %2749 ]
  %2871 = load ptr, ptr %151, align 8, !tbaa !28
  %2872 = getelementptr inbounds nuw %struct.Piece, ptr %2871, i64 %2870
  %2873 = getelementptr inbounds nuw i8, ptr %2872, i64 5568
  %2874 = load <8 x double>, ptr %2873, align 64, !tbaa !26
  %2875 = getelementptr inbounds nuw i8, ptr %2872, i64 5760
  %2876 = load <8 x double>, ptr %2875, align 64, !tbaa !26
  %2877 = getelementptr inbounds nuw i8, ptr %2872, i64 7608
  %2878 = load ptr, ptr %2877, align 8, !tbaa !76
  %2879 = getelementptr inbounds nuw i8, ptr %2872, i64 7616
  %2880 = load ptr, ptr %2879, align 64, !tbaa !77
  %2881 = getelementptr inbounds nuw i8, ptr %2872, i64 7560
  %2882 = load ptr, ptr %2881, align 8, !tbaa !58
  %2883 = load i64, ptr %141, align 16, !tbaa !21
  %2884 = icmp sgt i64 %2883, 0
  br i1 %2884, label %2900, label %2885

2885:                                             ; preds = %2900, %2869
  %2886 = getelementptr inbounds nuw i8, ptr %2872, i64 7360
  %2887 = load <8 x i64>, ptr %2886, align 64, !tbaa !26
  %2888 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2887)
  %2889 = icmp eq i64 %2888, 0
  %2890 = load i64, ptr %142, align 8, !tbaa !22
  %2891 = icmp sgt i64 %2890, 0
  br i1 %2889, label %2897, label %2892

2892:                                             ; preds = %2885
  br i1 %2891, label %2893, label %2941

2893:                                             ; preds = %2892
  %2894 = getelementptr inbounds nuw i8, ptr %2872, i64 7712
  %2895 = getelementptr inbounds nuw i8, ptr %2872, i64 7720
  %2896 = getelementptr inbounds nuw i8, ptr %2872, i64 7680
  br label %2916

2897:                                             ; preds = %2885
  br i1 %2891, label %2898, label %2941

2898:                                             ; preds = %2897
  %2899 = getelementptr inbounds nuw i8, ptr %2872, i64 7680
  br label %2934

2900:                                             ; preds = %2869, %2900
  %2901 = phi <8 x double> [ %2913, %2900 ], [ %2874, %2869 ]
  %2902 = phi i64 [ %2903, %2900 ], [ %2883, %2869 ]
  %2903 = add nsw i64 %2902, -1
  %2904 = uitofp nneg i64 %2903 to double
  %2905 = insertelement <8 x double> poison, double %2904, i64 0
  %2906 = shufflevector <8 x double> %2905, <8 x double> poison, <8 x i32> zeroinitializer
  %2907 = fcmp ugt <8 x double> %2876, %2906
  %2908 = getelementptr inbounds nuw <8 x double>, ptr %2878, i64 %2903
  %2909 = load <8 x double>, ptr %2908, align 64, !tbaa !26
  %2910 = getelementptr inbounds nuw <8 x double>, ptr %2880, i64 %2903
  %2911 = load <8 x double>, ptr %2910, align 64, !tbaa !26
  %2912 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2911, <8 x double> %2901, <8 x double> %2909)
  %2913 = select <8 x i1> %2907, <8 x double> %2912, <8 x double> %2874
  %2914 = getelementptr inbounds nuw <8 x double>, ptr %2882, i64 %2903
  store <8 x double> %2913, ptr %2914, align 64, !tbaa !26
  %2915 = icmp samesign ugt i64 %2902, 1
  br i1 %2915, label %2900, label %2885, !llvm.loop !110

2916:                                             ; preds = %2893, %2916
  %2917 = phi i64 [ 0, %2893 ], [ %2931, %2916 ]
  %2918 = phi <8 x double> [ %2874, %2893 ], [ %2928, %2916 ]
  %2919 = load <8 x i64>, ptr %2886, align 64, !tbaa !26
  %2920 = load ptr, ptr %2894, align 32, !tbaa !82
  %2921 = getelementptr inbounds nuw <8 x double>, ptr %2920, i64 %2917
  %2922 = load <8 x double>, ptr %2921, align 64, !tbaa !26
  %2923 = load ptr, ptr %2895, align 8, !tbaa !83
  %2924 = getelementptr inbounds nuw <8 x double>, ptr %2923, i64 %2917
  %2925 = load <8 x double>, ptr %2924, align 64, !tbaa !26
  %2926 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2925, <8 x double> %2918, <8 x double> %2922)
  %2927 = icmp eq <8 x i64> %2919, zeroinitializer
  %2928 = select <8 x i1> %2927, <8 x double> %2874, <8 x double> %2926
  %2929 = load ptr, ptr %2896, align 64, !tbaa !111
  %2930 = getelementptr inbounds nuw <8 x double>, ptr %2929, i64 %2917
  store <8 x double> %2928, ptr %2930, align 64, !tbaa !26
  %2931 = add nuw nsw i64 %2917, 1
  %2932 = load i64, ptr %142, align 8, !tbaa !22
  %2933 = icmp slt i64 %2931, %2932
  br i1 %2933, label %2916, label %2941, !llvm.loop !112

2934:                                             ; preds = %2898, %2934
  %2935 = phi i64 [ 0, %2898 ], [ %2938, %2934 ]
  %2936 = load ptr, ptr %2899, align 64, !tbaa !111
  %2937 = getelementptr inbounds nuw <8 x double>, ptr %2936, i64 %2935
  store <8 x double> %2874, ptr %2937, align 64, !tbaa !26
  %2938 = add nuw nsw i64 %2935, 1
  %2939 = load i64, ptr %142, align 8, !tbaa !22
  %2940 = icmp slt i64 %2938, %2939
  br i1 %2940, label %2934, label %2941, !llvm.loop !113

2941:                                             ; preds = %2916, %2934, %2892, %2897
  %2942 = phi <8 x double> [ %2874, %2897 ], [ %2874, %2892 ], [ %2874, %2934 ], [ %2928, %2916 ]
  %2943 = load <8 x i64>, ptr %2886, align 64, !tbaa !26
  %2944 = getelementptr inbounds nuw i8, ptr %2872, i64 6272
  %2945 = load <8 x double>, ptr %2944, align 64, !tbaa !26
  %2946 = icmp eq <8 x i64> %2943, zeroinitializer
  %2947 = select <8 x i1> %2946, <8 x double> zeroinitializer, <8 x double> %2945
  %2948 = fsub <8 x double> splat (double 1.000000e+00), %2947
  %2949 = getelementptr inbounds nuw i8, ptr %2872, i64 5504
  %2950 = load <8 x double>, ptr %2949, align 64, !tbaa !26
  %2951 = fmul <8 x double> %2947, %2950
  %2952 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2948, <8 x double> %2942, <8 x double> %2951)
  %2953 = getelementptr inbounds nuw i8, ptr %2872, i64 6464
  store <8 x double> %2952, ptr %2953, align 64, !tbaa !26
  %2954 = getelementptr inbounds nuw i8, ptr %2872, i64 6208
  %2955 = load <8 x double>, ptr %2954, align 64, !tbaa !26
  %2956 = fsub <8 x double> %2950, %2942
  %2957 = fmul <8 x double> %2956, %2955
  %2958 = getelementptr inbounds nuw i8, ptr %2872, i64 6336
  store <8 x double> %2957, ptr %2958, align 64, !tbaa !26
  %2959 = getelementptr inbounds nuw i8, ptr %2872, i64 3200
  %2960 = load <8 x double>, ptr %2959, align 64, !tbaa !26
  %2961 = fdiv <8 x double> %2957, %2960
  %2962 = fsub <8 x double> %2950, %2961
  %2963 = getelementptr inbounds nuw i8, ptr %2872, i64 6400
  store <8 x double> %2962, ptr %2963, align 64, !tbaa !26
  %2964 = add nuw nsw i64 %2870, 1
  %2965 = load i64, ptr %166, align 8, !tbaa !20
  %2966 = icmp slt i64 %2964, %2965
  br i1 %2966, label %2869, label %2755, !llvm.loop !114

2967:                                             ; preds = %2782, %3185
  %2968 = phi i64 [ %3227, %3185 ], [ 0, %2782 ]
  %2969 = phi <8 x double> [ %3226, %3185 ], [ zeroinitializer, %2782 ]
  %2970 = load ptr, ptr %151, align 8, !tbaa !28
  %2971 = getelementptr inbounds nuw %struct.Piece, ptr %2970, i64 %2968
  %2972 = getelementptr inbounds nuw i8, ptr %2971, i64 5632
  %2973 = load <8 x double>, ptr %2972, align 64, !tbaa !26
  %2974 = getelementptr inbounds nuw i8, ptr %2971, i64 5696
  %2975 = load <8 x double>, ptr %2974, align 64, !tbaa !26
  %2976 = fadd <8 x double> %2973, %2975
  %2977 = getelementptr inbounds nuw i8, ptr %2971, i64 5568
  %2978 = load <8 x double>, ptr %2977, align 64, !tbaa !26
  %2979 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %2980 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2979, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2981 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2979, <8 x double> %2980, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2982 = getelementptr inbounds nuw i8, ptr %2971, i64 5312
  %2983 = load <8 x double>, ptr %2982, align 64, !tbaa !26
  %2984 = getelementptr inbounds nuw i8, ptr %2971, i64 4032
  %2985 = load <8 x double>, ptr %2984, align 64, !tbaa !26
  %2986 = fneg <8 x double> %2983
  %2987 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2986, <8 x double> %2985, <8 x double> %2976)
  %2988 = getelementptr inbounds nuw i8, ptr %2971, i64 5376
  %2989 = load <8 x double>, ptr %2988, align 64, !tbaa !26
  %2990 = getelementptr inbounds nuw i8, ptr %2971, i64 4800
  %2991 = load <8 x double>, ptr %2990, align 64, !tbaa !26
  %2992 = fneg <8 x double> %2989
  %2993 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2992, <8 x double> %2991, <8 x double> %2987)
  %2994 = getelementptr inbounds nuw i8, ptr %2971, i64 5248
  %2995 = load <8 x double>, ptr %2994, align 64, !tbaa !26
  %2996 = fdiv <8 x double> %2993, %2995
  %2997 = getelementptr inbounds nuw i8, ptr %2971, i64 1600
  %2998 = load <8 x double>, ptr %2997, align 64, !tbaa !26
  %2999 = fsub <8 x double> %2998, %2996
  %3000 = getelementptr inbounds nuw i8, ptr %2971, i64 3904
  %3001 = load <8 x double>, ptr %3000, align 64, !tbaa !26
  %3002 = getelementptr inbounds nuw i8, ptr %2971, i64 7168
  %3003 = load <8 x double>, ptr %3002, align 64, !tbaa !26
  %3004 = fsub <8 x double> %3001, %3003
  %3005 = getelementptr inbounds nuw i8, ptr %2971, i64 6784
  %3006 = load <8 x double>, ptr %3005, align 64, !tbaa !26
  %3007 = getelementptr inbounds nuw i8, ptr %2971, i64 1280
  %3008 = load <8 x double>, ptr %3007, align 64, !tbaa !26
  %3009 = fmul <8 x double> %3006, %3008
  %3010 = getelementptr inbounds nuw i8, ptr %2971, i64 6464
  %3011 = load <8 x double>, ptr %3010, align 64, !tbaa !26
  %3012 = fsub <8 x double> %3011, %2978
  %3013 = fmul <8 x double> %3009, %3012
  %3014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2981, <8 x double> %2976, <8 x double> %3013)
  %3015 = fsub <8 x double> %2999, %3004
  %3016 = getelementptr inbounds nuw i8, ptr %2971, i64 2944
  %3017 = getelementptr inbounds nuw i8, ptr %2971, i64 3072
  %3018 = load <8 x double>, ptr %3017, align 64, !tbaa !26
  %3019 = fsub <8 x double> %3015, %3018
  %3020 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3019)
  %3021 = getelementptr inbounds nuw i8, ptr %2971, i64 832
  %3022 = load <8 x double>, ptr %3021, align 64, !tbaa !26
  %3023 = fdiv <8 x double> %3020, %3022
  %3024 = getelementptr inbounds nuw i8, ptr %2971, i64 7360
  %3025 = load <8 x i64>, ptr %3024, align 64, !tbaa !26
  %3026 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3025)
  %3027 = icmp eq i64 %3026, 0
  br i1 %3027, label %3185, label %3028

3028:                                             ; preds = %2967
  %3029 = getelementptr inbounds nuw i8, ptr %2971, i64 3776
  %3030 = load <8 x double>, ptr %3029, align 64, !tbaa !26
  %3031 = fcmp ogt <8 x double> %3004, %2999
  %3032 = getelementptr inbounds nuw i8, ptr %2971, i64 7296
  %3033 = load <8 x double>, ptr %3032, align 64, !tbaa !26
  %3034 = fcmp oeq <8 x double> %3033, zeroinitializer
  %3035 = select <8 x i1> %3034, <8 x i1> %3031, <8 x i1> zeroinitializer
  %3036 = select <8 x i1> %3035, <8 x i64> %3025, <8 x i64> zeroinitializer
  %3037 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3036)
  %3038 = icmp eq i64 %3037, 0
  br i1 %3038, label %3109, label %3039

3039:                                             ; preds = %3028
  %3040 = fsub <8 x double> %3004, %2999
  %3041 = fdiv <8 x double> %3040, %3022
  %3042 = getelementptr inbounds nuw i8, ptr %2971, i64 7592
  %3043 = load ptr, ptr %3042, align 8, !tbaa !65
  %3044 = load i64, ptr %141, align 16, !tbaa !21
  %3045 = add nsw i64 %3044, -1
  %3046 = getelementptr inbounds <8 x double>, ptr %3043, i64 %3045
  %3047 = load <8 x double>, ptr %3046, align 64, !tbaa !26
  %3048 = icmp sgt i64 %3044, 1
  br i1 %3048, label %3049, label %3101

3049:                                             ; preds = %3039
  %3050 = getelementptr inbounds nuw i8, ptr %2971, i64 7552
  %3051 = load i64, ptr %3050, align 64, !tbaa !31
  %3052 = getelementptr inbounds nuw i8, ptr %2971, i64 4416
  %3053 = getelementptr inbounds nuw i8, ptr %2971, i64 1536
  %3054 = getelementptr inbounds nuw i8, ptr %2971, i64 7648
  br label %3055

3055:                                             ; preds = %3049, %3098
  %3056 = phi <8 x double> [ %3030, %3049 ], [ %3093, %3098 ]
  %3057 = phi i64 [ %3045, %3049 ], [ %3099, %3098 ]
  %3058 = phi <8 x double> [ %3047, %3049 ], [ %3081, %3098 ]
  %3059 = phi <8 x i64> [ %3036, %3049 ], [ %3085, %3098 ]
  %3060 = phi <8 x double> [ %3041, %3049 ], [ %3092, %3098 ]
  %3061 = icmp slt i64 %3057, %3051
  br i1 %3061, label %3062, label %3068

3062:                                             ; preds = %3055
  %3063 = load ptr, ptr %3054, align 32, !tbaa !72
  %3064 = getelementptr inbounds nuw <8 x double>, ptr %3063, i64 %3057
  %3065 = load <8 x double>, ptr %3064, align 64, !tbaa !26
  %3066 = load <8 x double>, ptr %3053, align 64, !tbaa !26
  %3067 = fmul <8 x double> %3065, %3066
  br label %3076

3068:                                             ; preds = %3055
  %3069 = load <8 x double>, ptr %3052, align 64, !tbaa !26
  %3070 = load <8 x double>, ptr %3053, align 64, !tbaa !26
  %3071 = load ptr, ptr %3054, align 32, !tbaa !72
  %3072 = getelementptr inbounds nuw <8 x double>, ptr %3071, i64 %3057
  %3073 = load <8 x double>, ptr %3072, align 64, !tbaa !26
  %3074 = fsub <8 x double> %3069, %3070
  %3075 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3073, <8 x double> %3074, <8 x double> %3070)
  br label %3076

3076:                                             ; preds = %3062, %3068
  %3077 = phi <8 x double> [ %3067, %3062 ], [ %3075, %3068 ]
  %3078 = getelementptr inbounds nuw <8 x double>, ptr %3043, i64 %3057
  %3079 = load <8 x double>, ptr %3078, align 64, !tbaa !26
  %3080 = icmp eq <8 x i64> %3059, zeroinitializer
  %3081 = select <8 x i1> %3080, <8 x double> %3058, <8 x double> %3079
  %3082 = fsub <8 x double> %3056, %3077
  %3083 = fmul <8 x double> %3082, %3081
  %3084 = fcmp olt <8 x double> %3083, %3060
  %3085 = select <8 x i1> %3084, <8 x i64> %3059, <8 x i64> zeroinitializer
  %3086 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3085)
  %3087 = icmp eq i64 %3086, 0
  br i1 %3087, label %3101, label %3088

3088:                                             ; preds = %3076
  %3089 = fneg <8 x double> %3081
  %3090 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3089, <8 x double> %3082, <8 x double> %3060)
  %3091 = icmp eq <8 x i64> %3085, zeroinitializer
  %3092 = select <8 x i1> %3091, <8 x double> %3060, <8 x double> %3090
  %3093 = select <8 x i1> %3091, <8 x double> %3056, <8 x double> %3077
  %3094 = icmp eq i64 %3057, 1
  br i1 %3094, label %3095, label %3098

3095:                                             ; preds = %3088
  %3096 = load <8 x double>, ptr %3043, align 64, !tbaa !26
  %3097 = select <8 x i1> %3091, <8 x double> %3081, <8 x double> %3096
  br label %3101

3098:                                             ; preds = %3088
  %3099 = add nsw i64 %3057, -1
  %3100 = icmp sgt i64 %3057, 1
  br i1 %3100, label %3055, label %3101, !llvm.loop !115

3101:                                             ; preds = %3098, %3076, %3095, %3039
  %3102 = phi <8 x double> [ %3041, %3039 ], [ %3092, %3095 ], [ %3060, %3076 ], [ %3092, %3098 ]
  %3103 = phi <8 x double> [ %3030, %3039 ], [ %3093, %3095 ], [ %3056, %3076 ], [ %3093, %3098 ]
  %3104 = phi <8 x double> [ %3047, %3039 ], [ %3097, %3095 ], [ %3081, %3076 ], [ %3081, %3098 ]
  %3105 = fdiv <8 x double> %3102, %3104
  %3106 = fsub <8 x double> %3103, %3105
  %3107 = icmp eq <8 x i64> %3036, zeroinitializer
  %3108 = select <8 x i1> %3107, <8 x double> %3030, <8 x double> %3106
  br label %3109

3109:                                             ; preds = %3101, %3028
  %3110 = phi <8 x double> [ %3108, %3101 ], [ %3030, %3028 ]
  %3111 = load <8 x double>, ptr %3016, align 64, !tbaa !26
  %3112 = getelementptr inbounds nuw i8, ptr %2971, i64 2560
  %3113 = load <8 x double>, ptr %3112, align 64, !tbaa !26
  %3114 = getelementptr inbounds nuw i8, ptr %2971, i64 2624
  %3115 = load <8 x double>, ptr %3114, align 64, !tbaa !26
  %3116 = getelementptr inbounds nuw i8, ptr %2971, i64 2688
  %3117 = load <8 x double>, ptr %3116, align 64, !tbaa !26
  %3118 = getelementptr inbounds nuw i8, ptr %2971, i64 2752
  %3119 = load <8 x double>, ptr %3118, align 64, !tbaa !26
  %3120 = load <8 x double>, ptr %2971, align 64, !tbaa !26
  %3121 = fmul <8 x double> %3120, splat (double 1.000000e-09)
  br label %3122

3122:                                             ; preds = %3109, %3122
  %3123 = phi <8 x i64> [ splat (i64 -1), %3109 ], [ %3140, %3122 ]
  %3124 = phi i32 [ 0, %3109 ], [ %3141, %3122 ]
  %3125 = phi <8 x double> [ %3111, %3109 ], [ %3137, %3122 ]
  %3126 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3125, <8 x double> %3119, <8 x double> %3117)
  %3127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3125, <8 x double> %3126, <8 x double> %3115)
  %3128 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3125, <8 x double> %3127, <8 x double> %3113)
  %3129 = fsub <8 x double> %3128, %3110
  %3130 = fmul <8 x double> %3125, splat (double 3.000000e+00)
  %3131 = fmul <8 x double> %3130, %3119
  %3132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3117, <8 x double> splat (double 2.000000e+00), <8 x double> %3131)
  %3133 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3125, <8 x double> %3132, <8 x double> %3115)
  %3134 = fdiv <8 x double> %3129, %3133
  %3135 = fsub <8 x double> %3125, %3134
  %3136 = icmp eq <8 x i64> %3123, zeroinitializer
  %3137 = select <8 x i1> %3136, <8 x double> %3125, <8 x double> %3135
  %3138 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3134)
  %3139 = fcmp oge <8 x double> %3138, %3121
  %3140 = select <8 x i1> %3139, <8 x i64> %3123, <8 x i64> zeroinitializer
  %3141 = add nuw nsw i32 %3124, 1
  %3142 = icmp samesign ult i32 %3124, 3
  %3143 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3140)
  %3144 = icmp ne i64 %3143, 0
  %3145 = select i1 %3142, i1 %3144, i1 false
  br i1 %3145, label %3122, label %3146, !llvm.loop !116

3146:                                             ; preds = %3122
  %3147 = fmul <8 x double> %3120, splat (double 2.800000e-01)
  %3148 = fcmp ogt <8 x double> %3137, %3147
  %3149 = select <8 x i1> %3148, <8 x double> %3137, <8 x double> %3147
  %3150 = fcmp olt <8 x double> %3149, %3120
  %3151 = select <8 x i1> %3150, <8 x double> %3149, <8 x double> %3120
  %3152 = fcmp olt <8 x double> %3004, %2999
  %3153 = icmp eq <8 x i64> %3025, zeroinitializer
  %3154 = select <8 x i1> %3153, <8 x i1> splat (i1 true), <8 x i1> %3152
  %3155 = select <8 x i1> %3154, <8 x double> %3004, <8 x double> %2999
  %3156 = fsub <8 x double> %3151, %3111
  %3157 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3156)
  %3158 = select <8 x i1> %3153, <8 x double> %3023, <8 x double> %3157
  %3159 = select <8 x i1> %3153, <8 x double> %3111, <8 x double> %3151
  store <8 x double> %3159, ptr %3016, align 64, !tbaa !26
  %3160 = getelementptr inbounds nuw i8, ptr %2971, i64 3008
  %3161 = load <8 x double>, ptr %3160, align 64, !tbaa !26
  %3162 = select <8 x i1> %3153, <8 x double> %3161, <8 x double> %3110
  store <8 x double> %3162, ptr %3160, align 64, !tbaa !26
  %3163 = getelementptr inbounds nuw i8, ptr %2971, i64 6720
  %3164 = load <8 x double>, ptr %3163, align 64, !tbaa !26
  %3165 = fmul <8 x double> %3164, splat (double 2.000000e+00)
  %3166 = getelementptr inbounds nuw i8, ptr %2971, i64 384
  %3167 = load <8 x double>, ptr %3166, align 64, !tbaa !26
  %3168 = getelementptr inbounds nuw i8, ptr %2971, i64 448
  %3169 = load <8 x double>, ptr %3168, align 64, !tbaa !26
  %3170 = getelementptr inbounds nuw i8, ptr %2971, i64 512
  %3171 = load <8 x double>, ptr %3170, align 64, !tbaa !26
  %3172 = fmul <8 x double> %2978, %3171
  %3173 = fmul <8 x double> %3172, splat (double 0x3FD5555555555555)
  %3174 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3169, <8 x double> splat (double 5.000000e-01), <8 x double> %3173)
  %3175 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2978, <8 x double> %3174, <8 x double> %3167)
  %3176 = fmul <8 x double> %2978, %3175
  %3177 = getelementptr inbounds nuw i8, ptr %2971, i64 768
  %3178 = load <8 x double>, ptr %3177, align 64, !tbaa !26
  %3179 = fneg <8 x double> %3178
  %3180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3179, <8 x double> %2978, <8 x double> %3176)
  %3181 = fmul <8 x double> %3165, %3180
  %3182 = fsub <8 x double> %3014, %3181
  %3183 = select <8 x i1> %3153, <8 x double> %3014, <8 x double> %3182
  %3184 = fsub <8 x double> %2999, %3155
  br label %3185

3185:                                             ; preds = %2967, %3146
  %3186 = phi <8 x double> [ %3015, %2967 ], [ %3184, %3146 ]
  %3187 = phi <8 x double> [ %3023, %2967 ], [ %3158, %3146 ]
  %3188 = phi <8 x double> [ %3004, %2967 ], [ %3155, %3146 ]
  %3189 = phi <8 x double> [ %3014, %2967 ], [ %3183, %3146 ]
  store <8 x double> %3186, ptr %3017, align 64, !tbaa !26
  %3190 = getelementptr inbounds nuw i8, ptr %2971, i64 3136
  store <8 x double> %3188, ptr %3190, align 64, !tbaa !26
  %3191 = getelementptr inbounds nuw i8, ptr %2971, i64 3264
  store <8 x double> %2996, ptr %3191, align 64, !tbaa !26
  %3192 = getelementptr inbounds nuw i8, ptr %2971, i64 3456
  store <8 x double> %2973, ptr %3192, align 64, !tbaa !26
  %3193 = getelementptr inbounds nuw i8, ptr %2971, i64 3520
  store <8 x double> %2978, ptr %3193, align 64, !tbaa !26
  %3194 = getelementptr inbounds nuw i8, ptr %2971, i64 6976
  %3195 = load <8 x double>, ptr %3194, align 64, !tbaa !26
  %3196 = getelementptr inbounds nuw i8, ptr %2971, i64 7040
  %3197 = load <8 x double>, ptr %3196, align 64, !tbaa !26
  %3198 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3195, <8 x double> %2978, <8 x double> %3197)
  %3199 = getelementptr inbounds nuw i8, ptr %2971, i64 6336
  %3200 = load <8 x double>, ptr %3199, align 64, !tbaa !26
  %3201 = getelementptr inbounds nuw i8, ptr %2971, i64 4096
  %3202 = load <8 x double>, ptr %3201, align 64, !tbaa !26
  %3203 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2986, <8 x double> %3202, <8 x double> %3200)
  %3204 = getelementptr inbounds nuw i8, ptr %2971, i64 4864
  %3205 = load <8 x double>, ptr %3204, align 64, !tbaa !26
  %3206 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2992, <8 x double> %3205, <8 x double> %3203)
  %3207 = fdiv <8 x double> %3206, %2995
  %3208 = getelementptr inbounds nuw i8, ptr %2971, i64 3328
  store <8 x double> %3207, ptr %3208, align 64, !tbaa !26
  %3209 = getelementptr inbounds nuw i8, ptr %2971, i64 4160
  %3210 = load <8 x double>, ptr %3209, align 64, !tbaa !26
  %3211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2986, <8 x double> %3210, <8 x double> %3189)
  %3212 = getelementptr inbounds nuw i8, ptr %2971, i64 4928
  %3213 = load <8 x double>, ptr %3212, align 64, !tbaa !26
  %3214 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2992, <8 x double> %3213, <8 x double> %3211)
  %3215 = fdiv <8 x double> %3214, %2995
  %3216 = getelementptr inbounds nuw i8, ptr %2971, i64 3392
  store <8 x double> %3215, ptr %3216, align 64, !tbaa !26
  %3217 = getelementptr inbounds nuw i8, ptr %2971, i64 4352
  %3218 = load <8 x double>, ptr %3217, align 64, !tbaa !26
  %3219 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2986, <8 x double> %3218, <8 x double> %3198)
  %3220 = getelementptr inbounds nuw i8, ptr %2971, i64 5120
  %3221 = load <8 x double>, ptr %3220, align 64, !tbaa !26
  %3222 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2992, <8 x double> %3221, <8 x double> %3219)
  %3223 = fdiv <8 x double> %3222, %2995
  %3224 = getelementptr inbounds nuw i8, ptr %2971, i64 3584
  store <8 x double> %3223, ptr %3224, align 64, !tbaa !26
  %3225 = fcmp ogt <8 x double> %2969, %3187
  %3226 = select <8 x i1> %3225, <8 x double> %2969, <8 x double> %3187
  %3227 = add nuw nsw i64 %2968, 1
  %3228 = load i64, ptr %166, align 8, !tbaa !20
  %3229 = icmp slt i64 %3227, %3228
  br i1 %3229, label %2967, label %3230, !llvm.loop !117

3230:                                             ; preds = %3185, %2782
  %3231 = phi i64 [ %2785, %2782 ], [ %3228, %3185 ]
  %3232 = phi <8 x double> [ zeroinitializer, %2782 ], [ %3226, %3185 ]
  %3233 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %3234 = fadd <8 x double> %3233, splat (double 1.000000e+00)
  store <8 x double> %3234, ptr %188, align 64, !tbaa !26
  %3235 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %3236 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %3237 = fcmp olt <8 x double> %3232, %3236
  %3238 = load i64, ptr %226, align 32, !tbaa !24
  %3239 = sitofp i64 %3238 to double
  %3240 = insertelement <8 x double> poison, double %3239, i64 0
  %3241 = shufflevector <8 x double> %3240, <8 x double> poison, <8 x i32> zeroinitializer
  %3242 = fcmp oge <8 x double> %3234, %3241
  %3243 = or <8 x i1> %3237, %3242
  %3244 = select <8 x i1> %3243, <8 x i64> %3235, <8 x i64> zeroinitializer
  store <8 x i64> %3244, ptr %155, align 64, !tbaa !26
  %3245 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3244)
  %3246 = icmp eq i64 %3245, 0
  br i1 %3246, label %546, label %3247, !llvm.loop !55

3247:                                             ; preds = %3230
  %3248 = icmp sgt i64 %3231, 0
  br i1 %3248, label %3249, label %3251

3249:                                             ; preds = %3247
  %3250 = icmp eq <8 x i64> %3244, zeroinitializer
  br label %3550

3251:                                             ; preds = %3598, %3247
  %3252 = phi i64 [ %3231, %3247 ], [ %3604, %3598 ]
  %3253 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %3254 = fadd <8 x double> %3253, splat (double 1.000000e+00)
  %3255 = icmp eq <8 x i64> %3244, zeroinitializer
  %3256 = select <8 x i1> %3255, <8 x double> %3253, <8 x double> %3254
  store <8 x double> %3256, ptr %227, align 64, !tbaa !26
  %3257 = fcmp ogt <8 x double> %3256, splat (double 4.000000e+01)
  %3258 = select <8 x i1> %3257, <8 x i64> %3244, <8 x i64> zeroinitializer
  %3259 = xor <8 x i64> %3258, %3244
  %3260 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %3261 = fadd <8 x double> %3260, splat (double 1.000000e+00)
  %3262 = icmp eq <8 x i64> %3258, zeroinitializer
  %3263 = select <8 x i1> %3262, <8 x double> %3260, <8 x double> %3261
  store <8 x double> %3263, ptr %149, align 64, !tbaa !26
  %3264 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %3265 = load <8 x double>, ptr %228, align 64, !tbaa !26
  %3266 = fsub <8 x double> %3264, %3265
  %3267 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3266)
  %3268 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %3269 = fmul <8 x double> %3268, splat (double 1.500000e+00)
  %3270 = fcmp ogt <8 x double> %3267, %3269
  %3271 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %3272 = fcmp ogt <8 x double> %3271, splat (double 2.000000e-03)
  %3273 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %3274 = fcmp oeq <8 x double> %3273, zeroinitializer
  %3275 = and <8 x i1> %3270, %3274
  %3276 = and <8 x i1> %3272, %3275
  %3277 = fdiv <8 x double> %3268, %3267
  %3278 = select <8 x i1> %3276, <8 x i64> %3259, <8 x i64> zeroinitializer
  %3279 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %3280 = fcmp ogt <8 x double> %3279, %3271
  %3281 = select <8 x i1> %3280, <8 x double> %3279, <8 x double> %3271
  %3282 = select <8 x i1> %3276, <8 x double> zeroinitializer, <8 x double> %3281
  %3283 = icmp eq <8 x i64> %3278, zeroinitializer
  %3284 = select <8 x i1> %3283, <8 x double> %3279, <8 x double> %3282
  store <8 x double> %3284, ptr %165, align 64, !tbaa !26
  %3285 = fcmp ogt <8 x double> %3277, splat (double 5.000000e-02)
  %3286 = select <8 x i1> %3285, <8 x double> %3277, <8 x double> splat (double 5.000000e-02)
  %3287 = fcmp olt <8 x double> %3286, splat (double 0x3FEE666666666666)
  %3288 = select <8 x i1> %3287, <8 x double> %3286, <8 x double> splat (double 0x3FEE666666666666)
  %3289 = fmul <8 x double> %3271, %3288
  %3290 = fcmp ogt <8 x double> %3289, splat (double 0x3EB0C6F7A0B5ED8D)
  %3291 = select <8 x i1> %3290, <8 x double> %3289, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3292 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3293 = select <8 x i1> %3283, <8 x double> %3292, <8 x double> %3291
  store <8 x double> %3293, ptr %161, align 64, !tbaa !26
  %3294 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %3295 = fadd <8 x double> %3294, splat (double 1.000000e+00)
  %3296 = select <8 x i1> %3283, <8 x double> %3294, <8 x double> %3295
  store <8 x double> %3296, ptr %146, align 64, !tbaa !26
  %3297 = xor <8 x i64> %3278, %3259
  %3298 = icmp sgt i64 %3252, 0
  br i1 %3298, label %3299, label %3391

3299:                                             ; preds = %3251
  %3300 = load ptr, ptr %151, align 8, !tbaa !28
  %3301 = fcmp ogt <8 x double> %3271, splat (double 0x3E7AD7F29ABCAF48)
  %3302 = fcmp ogt <8 x double> %3271, splat (double 1.000000e-05)
  %3303 = fcmp ogt <8 x double> %3271, splat (double 1.000000e-04)
  br label %3304

3304:                                             ; preds = %3299, %3304
  %3305 = phi i64 [ 0, %3299 ], [ %3387, %3304 ]
  %3306 = phi <8 x double> [ splat (double 1.000000e+00), %3299 ], [ %3386, %3304 ]
  %3307 = phi <8 x i64> [ zeroinitializer, %3299 ], [ %3334, %3304 ]
  %3308 = phi <8 x i64> [ zeroinitializer, %3299 ], [ %3383, %3304 ]
  %3309 = getelementptr inbounds nuw %struct.Piece, ptr %3300, i64 %3305
  %3310 = getelementptr inbounds nuw i8, ptr %3309, i64 3072
  %3311 = load <8 x double>, ptr %3310, align 64, !tbaa !26
  %3312 = getelementptr inbounds nuw i8, ptr %3309, i64 3840
  %3313 = load <8 x double>, ptr %3312, align 64, !tbaa !26
  %3314 = getelementptr inbounds nuw i8, ptr %3309, i64 7360
  %3315 = load <8 x i64>, ptr %3314, align 64, !tbaa !26
  %3316 = xor <8 x i64> %3315, splat (i64 -1)
  %3317 = getelementptr inbounds nuw i8, ptr %3309, i64 896
  %3318 = load <8 x double>, ptr %3317, align 64, !tbaa !26
  %3319 = fmul <8 x double> %3318, splat (double 1.000000e-04)
  %3320 = fcmp ogt <8 x double> %3319, splat (double 0x3E7AD7F29ABCAF48)
  %3321 = fneg <8 x double> %3319
  %3322 = select <8 x i1> %3320, <8 x double> %3321, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3323 = fcmp olt <8 x double> %3311, %3322
  %3324 = select <8 x i1> %3323, <8 x i64> %3316, <8 x i64> zeroinitializer
  %3325 = fcmp ole <8 x double> %3313, zeroinitializer
  %3326 = select <8 x i1> %3325, <8 x i64> %3324, <8 x i64> zeroinitializer
  %3327 = getelementptr inbounds nuw i8, ptr %3309, i64 832
  %3328 = load <8 x double>, ptr %3327, align 64, !tbaa !26
  %3329 = fmul <8 x double> %3328, splat (double -3.000000e-07)
  %3330 = fcmp olt <8 x double> %3311, %3329
  %3331 = select <8 x i1> %3301, <8 x i1> %3330, <8 x i1> zeroinitializer
  %3332 = select <8 x i1> %3331, <8 x i64> %3326, <8 x i64> zeroinitializer
  %3333 = or <8 x i64> %3332, %3308
  %3334 = or <8 x i64> %3332, %3307
  %3335 = fcmp olt <8 x double> %3306, splat (double 3.000000e-01)
  %3336 = icmp eq <8 x i64> %3332, zeroinitializer
  %3337 = select <8 x i1> %3336, <8 x i1> splat (i1 true), <8 x i1> %3335
  %3338 = select <8 x i1> %3337, <8 x double> %3306, <8 x double> splat (double 3.000000e-01)
  %3339 = xor <8 x i64> %3326, splat (i64 -1)
  %3340 = and <8 x i64> %3324, %3339
  %3341 = select <8 x i1> %3302, <8 x i64> %3340, <8 x i64> zeroinitializer
  %3342 = fsub <8 x double> %3313, %3311
  %3343 = fdiv <8 x double> %3313, %3342
  %3344 = or <8 x i64> %3333, %3341
  %3345 = fcmp olt <8 x double> %3338, %3343
  %3346 = icmp eq <8 x i64> %3341, zeroinitializer
  %3347 = select <8 x i1> %3346, <8 x i1> splat (i1 true), <8 x i1> %3345
  %3348 = select <8 x i1> %3347, <8 x double> %3338, <8 x double> %3343
  %3349 = getelementptr inbounds nuw i8, ptr %3309, i64 3776
  %3350 = load <8 x double>, ptr %3349, align 64, !tbaa !26
  %3351 = getelementptr inbounds nuw i8, ptr %3309, i64 3008
  %3352 = load <8 x double>, ptr %3351, align 64, !tbaa !26
  %3353 = getelementptr inbounds nuw i8, ptr %3309, i64 7296
  %3354 = load <8 x double>, ptr %3353, align 64, !tbaa !26
  %3355 = fcmp oeq <8 x double> %3354, zeroinitializer
  %3356 = getelementptr inbounds nuw i8, ptr %3309, i64 1472
  %3357 = load <8 x double>, ptr %3356, align 64, !tbaa !26
  %3358 = fmul <8 x double> %3357, splat (double 0x3FEFF7CED916872B)
  %3359 = fcmp olt <8 x double> %3352, %3358
  %3360 = and <8 x i1> %3355, %3359
  %3361 = and <8 x i1> %3303, %3360
  %3362 = fsub <8 x double> %3350, %3357
  %3363 = fsub <8 x double> %3350, %3352
  %3364 = fdiv <8 x double> %3362, %3363
  %3365 = fcmp uge <8 x double> %3348, %3364
  %3366 = select <8 x i1> %3361, <8 x i1> %3365, <8 x i1> zeroinitializer
  %3367 = select <8 x i1> %3366, <8 x double> %3364, <8 x double> %3348
  %3368 = fcmp oeq <8 x double> %3354, splat (double 1.000000e+00)
  %3369 = getelementptr inbounds nuw i8, ptr %3309, i64 3264
  %3370 = load <8 x double>, ptr %3369, align 64, !tbaa !26
  %3371 = getelementptr inbounds nuw i8, ptr %3309, i64 1600
  %3372 = load <8 x double>, ptr %3371, align 64, !tbaa !26
  %3373 = fmul <8 x double> %3372, splat (double 1.000100e+00)
  %3374 = fcmp ogt <8 x double> %3370, %3373
  %3375 = and <8 x i1> %3368, %3374
  %3376 = and <8 x i1> %3303, %3375
  %3377 = getelementptr inbounds nuw i8, ptr %3309, i64 4032
  %3378 = load <8 x double>, ptr %3377, align 64, !tbaa !26
  %3379 = fsub <8 x double> %3372, %3378
  %3380 = fsub <8 x double> %3370, %3378
  %3381 = fdiv <8 x double> %3379, %3380
  %3382 = select <8 x i1> %3375, <8 x i1> %3303, <8 x i1> %3361
  %3383 = select <8 x i1> %3382, <8 x i64> splat (i64 -1), <8 x i64> %3344
  %3384 = fcmp uge <8 x double> %3367, %3381
  %3385 = select <8 x i1> %3376, <8 x i1> %3384, <8 x i1> zeroinitializer
  %3386 = select <8 x i1> %3385, <8 x double> %3381, <8 x double> %3367
  %3387 = add nuw nsw i64 %3305, 1
  %3388 = icmp eq i64 %3387, %3252
  br i1 %3388, label %3389, label %3304, !llvm.loop !118

3389:                                             ; preds = %3304
  %3390 = icmp eq <8 x i64> %3334, zeroinitializer
  br label %3391

3391:                                             ; preds = %3389, %3251
  %3392 = phi <8 x i64> [ zeroinitializer, %3251 ], [ %3383, %3389 ]
  %3393 = phi <8 x i1> [ splat (i1 true), %3251 ], [ %3390, %3389 ]
  %3394 = phi <8 x double> [ splat (double 1.000000e+00), %3251 ], [ %3386, %3389 ]
  %3395 = and <8 x i64> %3392, %3297
  %3396 = fcmp ogt <8 x double> %3284, %3271
  %3397 = select <8 x i1> %3396, <8 x double> %3284, <8 x double> %3271
  %3398 = select <8 x i1> %3393, <8 x double> %3397, <8 x double> zeroinitializer
  %3399 = icmp eq <8 x i64> %3395, zeroinitializer
  %3400 = select <8 x i1> %3399, <8 x double> %3284, <8 x double> %3398
  %3401 = fcmp ogt <8 x double> %3394, splat (double 5.000000e-02)
  %3402 = select <8 x i1> %3401, <8 x double> %3394, <8 x double> splat (double 5.000000e-02)
  %3403 = fcmp olt <8 x double> %3402, splat (double 0x3FEE666666666666)
  %3404 = select <8 x i1> %3403, <8 x double> %3402, <8 x double> splat (double 0x3FEE666666666666)
  %3405 = fmul <8 x double> %3271, %3404
  %3406 = fcmp ogt <8 x double> %3405, splat (double 0x3EB0C6F7A0B5ED8D)
  %3407 = select <8 x i1> %3406, <8 x double> %3405, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3408 = select <8 x i1> %3399, <8 x double> %3293, <8 x double> %3407
  %3409 = fadd <8 x double> %3296, splat (double 1.000000e+00)
  %3410 = select <8 x i1> %3399, <8 x double> %3296, <8 x double> %3409
  %3411 = xor <8 x i64> %3395, %3297
  %3412 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %3413 = fmul <8 x double> %3412, splat (double 5.000000e-01)
  %3414 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %3415 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %3416 = fneg <8 x double> %3413
  %3417 = icmp eq <8 x i64> %3415, zeroinitializer
  %3418 = select <8 x i1> %3417, <8 x double> %3416, <8 x double> %3413
  %3419 = fadd <8 x double> %3414, %3418
  %3420 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %3421 = fsub <8 x double> %3420, %3419
  %3422 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %3423 = fsub <8 x double> %3422, %3419
  %3424 = fneg <8 x double> %3421
  %3425 = select <8 x i1> %3417, <8 x double> %3424, <8 x double> %3421
  %3426 = fneg <8 x double> %3423
  %3427 = select <8 x i1> %3417, <8 x double> %3426, <8 x double> %3423
  %3428 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3429 = fcmp oeq <8 x double> %3428, zeroinitializer
  %3430 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3431 = fcmp oeq <8 x double> %3430, zeroinitializer
  %3432 = and <8 x i1> %3429, %3431
  %3433 = fcmp olt <8 x double> %3425, splat (double -1.000000e-03)
  %3434 = and <8 x i1> %3432, %3433
  %3435 = fcmp ogt <8 x double> %3427, splat (double 4.000000e-03)
  %3436 = and <8 x i1> %3435, %3434
  %3437 = and <8 x i1> %3272, %3436
  %3438 = fsub <8 x double> %3425, %3427
  %3439 = fdiv <8 x double> %3425, %3438
  %3440 = select <8 x i1> %3437, <8 x i64> %3411, <8 x i64> zeroinitializer
  %3441 = fcmp ogt <8 x double> %3400, %3271
  %3442 = icmp eq <8 x i64> %3440, zeroinitializer
  %3443 = select <8 x i1> %3442, <8 x i1> splat (i1 true), <8 x i1> %3441
  %3444 = select <8 x i1> %3443, <8 x double> %3400, <8 x double> %3271
  store <8 x double> %3444, ptr %165, align 64, !tbaa !26
  %3445 = fcmp ogt <8 x double> %3439, splat (double 5.000000e-02)
  %3446 = select <8 x i1> %3445, <8 x double> %3439, <8 x double> splat (double 5.000000e-02)
  %3447 = fcmp olt <8 x double> %3446, splat (double 0x3FEE666666666666)
  %3448 = select <8 x i1> %3447, <8 x double> %3446, <8 x double> splat (double 0x3FEE666666666666)
  %3449 = fmul <8 x double> %3271, %3448
  %3450 = fcmp ogt <8 x double> %3449, splat (double 0x3EB0C6F7A0B5ED8D)
  %3451 = select <8 x i1> %3450, <8 x double> %3449, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3452 = select <8 x i1> %3442, <8 x double> %3408, <8 x double> %3451
  store <8 x double> %3452, ptr %161, align 64, !tbaa !26
  %3453 = fadd <8 x double> %3410, splat (double 1.000000e+00)
  %3454 = select <8 x i1> %3442, <8 x double> %3410, <8 x double> %3453
  store <8 x double> %3454, ptr %146, align 64, !tbaa !26
  %3455 = xor <8 x i64> %3440, %3411
  %3456 = load <8 x double>, ptr %231, align 64, !tbaa !26
  %3457 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %3458 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %3459 = fsub <8 x double> %3457, %3458
  %3460 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %3461 = fcmp une <8 x double> %3460, splat (double 1.000000e+00)
  %3462 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %3463 = fsub <8 x double> %3420, %3462
  %3464 = select <8 x i1> %3461, <8 x double> splat (double -1.000000e+00), <8 x double> %3463
  %3465 = fcmp une <8 x double> %3460, splat (double 2.000000e+00)
  %3466 = fsub <8 x double> %3456, %3462
  %3467 = select <8 x i1> %3465, <8 x double> %3464, <8 x double> %3466
  %3468 = fcmp une <8 x double> %3460, splat (double 3.000000e+00)
  %3469 = fsub <8 x double> %3459, %3462
  %3470 = select <8 x i1> %3468, <8 x double> %3467, <8 x double> %3469
  %3471 = fcmp une <8 x double> %3460, splat (double 4.000000e+00)
  %3472 = fsub <8 x double> %3462, %3459
  %3473 = select <8 x i1> %3471, <8 x double> %3470, <8 x double> %3472
  br i1 %3298, label %3474, label %3506

3474:                                             ; preds = %3391
  %3475 = load ptr, ptr %151, align 8, !tbaa !28
  %3476 = and i64 %3252, 1
  %3477 = icmp eq i64 %3252, 1
  br i1 %3477, label %3496, label %3478

3478:                                             ; preds = %3474
  %3479 = and i64 %3252, 9223372036854775806
  br label %3480

3480:                                             ; preds = %3480, %3478
  %3481 = phi i64 [ 0, %3478 ], [ %3493, %3480 ]
  %3482 = phi <8 x double> [ splat (double 1.000000e+09), %3478 ], [ %3492, %3480 ]
  %3483 = phi i64 [ 0, %3478 ], [ %3494, %3480 ]
  %3484 = getelementptr inbounds nuw %struct.Piece, ptr %3475, i64 %3481, i32 35
  %3485 = load <8 x double>, ptr %3484, align 64, !tbaa !26
  %3486 = fcmp olt <8 x double> %3482, %3485
  %3487 = select <8 x i1> %3486, <8 x double> %3482, <8 x double> %3485
  %3488 = or disjoint i64 %3481, 1
  %3489 = getelementptr inbounds nuw %struct.Piece, ptr %3475, i64 %3488, i32 35
  %3490 = load <8 x double>, ptr %3489, align 64, !tbaa !26
  %3491 = fcmp olt <8 x double> %3487, %3490
  %3492 = select <8 x i1> %3491, <8 x double> %3487, <8 x double> %3490
  %3493 = add nuw nsw i64 %3481, 2
  %3494 = add i64 %3483, 2
  %3495 = icmp eq i64 %3494, %3479
  br i1 %3495, label %3496, label %3480, !llvm.loop !119

3496:                                             ; preds = %3480, %3474
  %3497 = phi <8 x double> [ poison, %3474 ], [ %3492, %3480 ]
  %3498 = phi i64 [ 0, %3474 ], [ %3493, %3480 ]
  %3499 = phi <8 x double> [ splat (double 1.000000e+09), %3474 ], [ %3492, %3480 ]
  %3500 = icmp eq i64 %3476, 0
  br i1 %3500, label %3506, label %3501

3501:                                             ; preds = %3496
  %3502 = getelementptr inbounds nuw %struct.Piece, ptr %3475, i64 %3498, i32 35
  %3503 = load <8 x double>, ptr %3502, align 64, !tbaa !26
  %3504 = fcmp olt <8 x double> %3499, %3503
  %3505 = select <8 x i1> %3504, <8 x double> %3499, <8 x double> %3503
  br label %3506

3506:                                             ; preds = %3501, %3496, %3391
  %3507 = phi <8 x double> [ splat (double 1.000000e+09), %3391 ], [ %3497, %3496 ], [ %3505, %3501 ]
  %3508 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %3509 = fsub <8 x double> %3508, %3458
  %3510 = fsub <8 x double> %3422, %3462
  %3511 = select <8 x i1> %3461, <8 x double> splat (double -1.000000e+00), <8 x double> %3510
  %3512 = fsub <8 x double> %3507, %3462
  %3513 = select <8 x i1> %3465, <8 x double> %3511, <8 x double> %3512
  %3514 = fsub <8 x double> %3509, %3462
  %3515 = select <8 x i1> %3468, <8 x double> %3513, <8 x double> %3514
  %3516 = fsub <8 x double> %3462, %3509
  %3517 = select <8 x i1> %3471, <8 x double> %3515, <8 x double> %3516
  %3518 = fcmp une <8 x double> %3460, zeroinitializer
  %3519 = fcmp oge <8 x double> %3271, splat (double 5.000000e-02)
  %3520 = and <8 x i1> %3519, %3518
  %3521 = fcmp olt <8 x double> %3473, zeroinitializer
  %3522 = and <8 x i1> %3520, %3521
  %3523 = fsub <8 x double> %3517, %3473
  %3524 = fmul <8 x double> %3523, splat (double 2.000000e-02)
  %3525 = fcmp ogt <8 x double> %3517, %3524
  %3526 = and <8 x i1> %3522, %3525
  %3527 = fsub <8 x double> %3473, %3517
  %3528 = fdiv <8 x double> %3473, %3527
  %3529 = fcmp olt <8 x double> %3528, splat (double 0x3FEE666666666666)
  %3530 = and <8 x i1> %3529, %3526
  %3531 = select <8 x i1> %3530, <8 x i64> %3455, <8 x i64> zeroinitializer
  %3532 = fcmp ogt <8 x double> %3444, %3271
  %3533 = icmp eq <8 x i64> %3531, zeroinitializer
  %3534 = select <8 x i1> %3533, <8 x i1> splat (i1 true), <8 x i1> %3532
  %3535 = select <8 x i1> %3534, <8 x double> %3444, <8 x double> %3271
  store <8 x double> %3535, ptr %165, align 64, !tbaa !26
  %3536 = fcmp ogt <8 x double> %3528, splat (double 5.000000e-02)
  %3537 = select <8 x i1> %3536, <8 x double> %3528, <8 x double> splat (double 5.000000e-02)
  %3538 = fcmp olt <8 x double> %3537, splat (double 0x3FEE666666666666)
  %3539 = select <8 x i1> %3538, <8 x double> %3537, <8 x double> splat (double 0x3FEE666666666666)
  %3540 = fmul <8 x double> %3271, %3539
  %3541 = fcmp ogt <8 x double> %3540, splat (double 0x3EB0C6F7A0B5ED8D)
  %3542 = select <8 x i1> %3541, <8 x double> %3540, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3543 = select <8 x i1> %3533, <8 x double> %3452, <8 x double> %3542
  store <8 x double> %3543, ptr %161, align 64, !tbaa !26
  %3544 = fadd <8 x double> %3454, splat (double 1.000000e+00)
  %3545 = select <8 x i1> %3533, <8 x double> %3454, <8 x double> %3544
  store <8 x double> %3545, ptr %146, align 64, !tbaa !26
  %3546 = xor <8 x i64> %3531, %3455
  %3547 = or <8 x i64> %3546, %3258
  %3548 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3547)
  %3549 = icmp eq i64 %3548, 0
  br i1 %3549, label %546, label %3606

3550:                                             ; preds = %3249, %3598
  %3551 = phi i64 [ 0, %3249 ], [ %3603, %3598 ]
  %3552 = load ptr, ptr %151, align 8, !tbaa !28
  %3553 = getelementptr inbounds nuw %struct.Piece, ptr %3552, i64 %3551
  %3554 = getelementptr inbounds nuw i8, ptr %3553, i64 7560
  %3555 = load ptr, ptr %3554, align 8, !tbaa !58
  %3556 = load <8 x double>, ptr %3555, align 64, !tbaa !26
  %3557 = getelementptr inbounds nuw i8, ptr %3553, i64 1344
  %3558 = load <8 x double>, ptr %3557, align 64, !tbaa !26
  %3559 = getelementptr inbounds nuw i8, ptr %3555, i64 64
  %3560 = load <8 x double>, ptr %3559, align 64, !tbaa !26
  %3561 = fsub <8 x double> %3560, %3556
  %3562 = fneg <8 x double> %3558
  %3563 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3562, <8 x double> %3561, <8 x double> %3556)
  %3564 = getelementptr inbounds nuw i8, ptr %3553, i64 7552
  %3565 = load i64, ptr %3564, align 64, !tbaa !31
  %3566 = icmp eq i64 %3565, 0
  br i1 %3566, label %3598, label %3567

3567:                                             ; preds = %3550
  %3568 = getelementptr <8 x double>, ptr %3555, i64 %3565
  %3569 = getelementptr i8, ptr %3568, i64 -64
  %3570 = load <8 x double>, ptr %3569, align 64, !tbaa !26
  %3571 = load <8 x double>, ptr %3568, align 64, !tbaa !26
  %3572 = getelementptr inbounds nuw i8, ptr %3553, i64 2880
  %3573 = load <8 x double>, ptr %3572, align 64, !tbaa !26
  %3574 = getelementptr inbounds nuw i8, ptr %3553, i64 2944
  %3575 = load <8 x double>, ptr %3574, align 64, !tbaa !26
  %3576 = getelementptr inbounds nuw i8, ptr %3553, i64 64
  %3577 = load <8 x double>, ptr %3576, align 64, !tbaa !26
  %3578 = fsub <8 x double> %3575, %3577
  %3579 = fmul <8 x double> %3573, %3578
  %3580 = getelementptr inbounds nuw i8, ptr %3553, i64 576
  %3581 = load <8 x double>, ptr %3580, align 64, !tbaa !26
  %3582 = getelementptr inbounds nuw i8, ptr %3553, i64 2816
  %3583 = load <8 x double>, ptr %3582, align 64, !tbaa !26
  %3584 = fdiv <8 x double> %3581, %3583
  %3585 = getelementptr inbounds nuw i8, ptr %3553, i64 192
  %3586 = load <8 x double>, ptr %3585, align 64, !tbaa !26
  %3587 = getelementptr inbounds nuw i8, ptr %3553, i64 256
  %3588 = load <8 x double>, ptr %3587, align 64, !tbaa !26
  %3589 = getelementptr inbounds nuw i8, ptr %3553, i64 320
  %3590 = load <8 x double>, ptr %3589, align 64, !tbaa !26
  %3591 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3571, <8 x double> %3590, <8 x double> %3588)
  %3592 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3571, <8 x double> %3591, <8 x double> %3586)
  %3593 = fdiv <8 x double> %3592, %3579
  %3594 = fmul <8 x double> %3571, %3593
  %3595 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3584, <8 x double> %3570, <8 x double> %3594)
  %3596 = fadd <8 x double> %3584, %3593
  %3597 = fdiv <8 x double> %3595, %3596
  br label %3598

3598:                                             ; preds = %3550, %3567
  %3599 = phi <8 x double> [ %3597, %3567 ], [ %3563, %3550 ]
  %3600 = getelementptr inbounds nuw i8, ptr %3553, i64 7232
  %3601 = load <8 x double>, ptr %3600, align 64, !tbaa !26
  %3602 = select <8 x i1> %3250, <8 x double> %3601, <8 x double> %3599
  store <8 x double> %3602, ptr %3600, align 64, !tbaa !26
  %3603 = add nuw nsw i64 %3551, 1
  %3604 = load i64, ptr %166, align 8, !tbaa !20
  %3605 = icmp slt i64 %3603, %3604
  br i1 %3605, label %3550, label %3251, !llvm.loop !120

3606:                                             ; preds = %3506
  %3607 = icmp eq <8 x i64> %3547, zeroinitializer
  %3608 = select <8 x i1> %3607, <8 x double> %3265, <8 x double> %3264
  store <8 x double> %3608, ptr %228, align 64, !tbaa !26
  %3609 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %3610 = select <8 x i1> %3607, <8 x double> %3609, <8 x double> %3420
  store <8 x double> %3610, ptr %175, align 64, !tbaa !26
  %3611 = select <8 x i1> %3607, <8 x double> %3420, <8 x double> %3422
  store <8 x double> %3611, ptr %174, align 64, !tbaa !26
  %3612 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %3613 = select <8 x i1> %3607, <8 x double> %3612, <8 x double> %3457
  store <8 x double> %3613, ptr %260, align 64, !tbaa !26
  %3614 = select <8 x i1> %3607, <8 x double> %3457, <8 x double> %3508
  store <8 x double> %3614, ptr %261, align 64, !tbaa !26
  %3615 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %3616 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %3617 = select <8 x i1> %3607, <8 x double> %3616, <8 x double> %3615
  store <8 x double> %3617, ptr %262, align 64, !tbaa !26
  %3618 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %3619 = select <8 x i1> %3607, <8 x double> %3615, <8 x double> %3618
  store <8 x double> %3619, ptr %263, align 64, !tbaa !26
  %3620 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %3621 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %3622 = select <8 x i1> %3607, <8 x double> %3621, <8 x double> %3620
  store <8 x double> %3622, ptr %265, align 64, !tbaa !26
  %3623 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %3624 = select <8 x i1> %3607, <8 x double> %3620, <8 x double> %3623
  store <8 x double> %3624, ptr %266, align 64, !tbaa !26
  %3625 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %3626 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %3627 = select <8 x i1> %3607, <8 x double> %3626, <8 x double> %3625
  store <8 x double> %3627, ptr %268, align 64, !tbaa !26
  %3628 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %3629 = select <8 x i1> %3607, <8 x double> %3625, <8 x double> %3628
  store <8 x double> %3629, ptr %269, align 64, !tbaa !26
  %3630 = load <8 x double>, ptr %272, align 64, !tbaa !26
  %3631 = load <8 x double>, ptr %271, align 64, !tbaa !26
  %3632 = select <8 x i1> %3607, <8 x double> %3631, <8 x double> %3630
  store <8 x double> %3632, ptr %271, align 64, !tbaa !26
  %3633 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %3634 = select <8 x i1> %3607, <8 x double> %3630, <8 x double> %3633
  store <8 x double> %3634, ptr %272, align 64, !tbaa !26
  %3635 = xor <8 x i64> %3547, splat (i64 -1)
  br i1 %3298, label %3636, label %4007

3636:                                             ; preds = %3606, %3972
  %3637 = phi i64 [ %3984, %3972 ], [ 0, %3606 ]
  %3638 = load ptr, ptr %151, align 8, !tbaa !28
  %3639 = getelementptr inbounds nuw %struct.Piece, ptr %3638, i64 %3637
  %3640 = getelementptr inbounds nuw i8, ptr %3639, i64 1664
  %3641 = load <8 x double>, ptr %3640, align 64, !tbaa !26
  %3642 = fcmp ogt <8 x double> %3641, zeroinitializer
  %3643 = bitcast <8 x i1> %3642 to i8
  %3644 = icmp eq i8 %3643, 0
  %3645 = load i64, ptr %141, align 16, !tbaa !21
  br i1 %3644, label %3903, label %3646

3646:                                             ; preds = %3636
  %3647 = add i64 %3645, -1
  %3648 = getelementptr inbounds nuw i8, ptr %3639, i64 4416
  %3649 = load <8 x double>, ptr %3648, align 64, !tbaa !26
  %3650 = getelementptr inbounds nuw i8, ptr %3639, i64 3648
  %3651 = load <8 x double>, ptr %3650, align 64, !tbaa !26
  %3652 = getelementptr inbounds nuw i8, ptr %3639, i64 7552
  %3653 = load i64, ptr %3652, align 64, !tbaa !31
  %3654 = icmp sgt i64 %3645, %3653
  br i1 %3654, label %3663, label %3655

3655:                                             ; preds = %3646
  %3656 = getelementptr inbounds nuw i8, ptr %3639, i64 7648
  %3657 = load ptr, ptr %3656, align 32, !tbaa !72
  %3658 = getelementptr inbounds <8 x double>, ptr %3657, i64 %3647
  %3659 = load <8 x double>, ptr %3658, align 64, !tbaa !26
  %3660 = getelementptr inbounds nuw i8, ptr %3639, i64 1536
  %3661 = load <8 x double>, ptr %3660, align 64, !tbaa !26
  %3662 = fmul <8 x double> %3659, %3661
  br label %3672

3663:                                             ; preds = %3646
  %3664 = getelementptr inbounds nuw i8, ptr %3639, i64 1536
  %3665 = load <8 x double>, ptr %3664, align 64, !tbaa !26
  %3666 = getelementptr inbounds nuw i8, ptr %3639, i64 7648
  %3667 = load ptr, ptr %3666, align 32, !tbaa !72
  %3668 = getelementptr inbounds <8 x double>, ptr %3667, i64 %3647
  %3669 = load <8 x double>, ptr %3668, align 64, !tbaa !26
  %3670 = fsub <8 x double> %3649, %3665
  %3671 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3669, <8 x double> %3670, <8 x double> %3665)
  br label %3672

3672:                                             ; preds = %3663, %3655
  %3673 = phi <8 x double> [ %3661, %3655 ], [ %3665, %3663 ]
  %3674 = phi <8 x double> [ %3662, %3655 ], [ %3671, %3663 ]
  %3675 = getelementptr inbounds nuw i8, ptr %3639, i64 3008
  %3676 = load <8 x double>, ptr %3675, align 64, !tbaa !26
  %3677 = fcmp ole <8 x double> %3674, %3676
  %3678 = getelementptr inbounds nuw i8, ptr %3639, i64 7296
  %3679 = load <8 x double>, ptr %3678, align 64, !tbaa !26
  %3680 = fcmp oeq <8 x double> %3679, zeroinitializer
  %3681 = select <8 x i1> %3680, <8 x i1> %3677, <8 x i1> zeroinitializer
  %3682 = select <8 x i1> %3681, <8 x i64> %3547, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %3683 = xor <8 x i64> %3682, %3547
  store <8 x i64> %3683, ptr %12, align 64, !tbaa !26
  %3684 = fsub <8 x double> %3649, %3651
  %3685 = getelementptr inbounds nuw i8, ptr %3639, i64 1536
  %3686 = fsub <8 x double> %3651, %3673
  %3687 = fdiv <8 x double> %3684, %3686
  %3688 = getelementptr inbounds nuw i8, ptr %3639, i64 7592
  %3689 = load ptr, ptr %3688, align 8, !tbaa !65
  %3690 = getelementptr inbounds <8 x double>, ptr %3689, i64 %3653
  %3691 = load <8 x double>, ptr %3690, align 64, !tbaa !26
  %3692 = getelementptr inbounds nuw i8, ptr %3639, i64 7600
  %3693 = load ptr, ptr %3692, align 16, !tbaa !48
  %3694 = getelementptr inbounds <8 x double>, ptr %3693, i64 %3653
  %3695 = load <8 x double>, ptr %3694, align 64, !tbaa !26
  %3696 = icmp eq <8 x i64> %3682, zeroinitializer
  %3697 = select <8 x i1> %3696, <8 x double> %3695, <8 x double> %3691
  store <8 x double> %3697, ptr %3694, align 64, !tbaa !26
  %3698 = load i64, ptr %3652, align 64, !tbaa !31
  %3699 = add nsw i64 %3698, 1
  %3700 = icmp slt i64 %3699, %3647
  br i1 %3700, label %3701, label %3705

3701:                                             ; preds = %3672
  %3702 = getelementptr inbounds nuw i8, ptr %3639, i64 7664
  br label %3745

3703:                                             ; preds = %3745
  %3704 = load i64, ptr %3652, align 64, !tbaa !31
  br label %3705

3705:                                             ; preds = %3703, %3672
  %3706 = phi i64 [ %3698, %3672 ], [ %3704, %3703 ]
  %3707 = phi <8 x double> [ %3691, %3672 ], [ %3750, %3703 ]
  %3708 = icmp sgt i64 %3645, %3706
  br i1 %3708, label %3716, label %3709

3709:                                             ; preds = %3705
  %3710 = getelementptr inbounds nuw i8, ptr %3639, i64 7648
  %3711 = load ptr, ptr %3710, align 32, !tbaa !72
  %3712 = getelementptr inbounds <8 x double>, ptr %3711, i64 %3647
  %3713 = load <8 x double>, ptr %3712, align 64, !tbaa !26
  %3714 = load <8 x double>, ptr %3685, align 64, !tbaa !26
  %3715 = fmul <8 x double> %3713, %3714
  br label %3724

3716:                                             ; preds = %3705
  %3717 = load <8 x double>, ptr %3685, align 64, !tbaa !26
  %3718 = getelementptr inbounds nuw i8, ptr %3639, i64 7648
  %3719 = load ptr, ptr %3718, align 32, !tbaa !72
  %3720 = getelementptr inbounds <8 x double>, ptr %3719, i64 %3647
  %3721 = load <8 x double>, ptr %3720, align 64, !tbaa !26
  %3722 = fsub <8 x double> %3651, %3717
  %3723 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3721, <8 x double> %3722, <8 x double> %3717)
  br label %3724

3724:                                             ; preds = %3716, %3709
  %3725 = phi <8 x double> [ %3715, %3709 ], [ %3723, %3716 ]
  %3726 = load ptr, ptr %3688, align 8, !tbaa !65
  %3727 = getelementptr inbounds <8 x double>, ptr %3726, i64 %3647
  %3728 = load <8 x double>, ptr %3727, align 64, !tbaa !26
  %3729 = load ptr, ptr %3692, align 16, !tbaa !48
  %3730 = getelementptr inbounds <8 x double>, ptr %3729, i64 %3647
  %3731 = fsub <8 x double> %3707, %3728
  %3732 = fsub <8 x double> %3674, %3725
  %3733 = load <8 x double>, ptr %3675, align 64, !tbaa !26
  %3734 = fsub <8 x double> %3733, %3725
  %3735 = fdiv <8 x double> %3732, %3734
  %3736 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3731, <8 x double> %3735, <8 x double> %3728)
  %3737 = load <8 x double>, ptr %3730, align 64, !tbaa !26
  %3738 = select <8 x i1> %3696, <8 x double> %3737, <8 x double> %3736
  store <8 x double> %3738, ptr %3730, align 64, !tbaa !26
  %3739 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3683)
  %3740 = icmp eq i64 %3739, 0
  br i1 %3740, label %3901, label %3741

3741:                                             ; preds = %3724
  %3742 = getelementptr inbounds nuw i8, ptr %3639, i64 7648
  %3743 = getelementptr inbounds nuw i8, ptr %3639, i64 3136
  %3744 = getelementptr inbounds nuw i8, ptr %3639, i64 832
  br label %3763

3745:                                             ; preds = %3701, %3745
  %3746 = phi i64 [ %3699, %3701 ], [ %3761, %3745 ]
  %3747 = phi <8 x double> [ %3691, %3701 ], [ %3750, %3745 ]
  %3748 = load ptr, ptr %3688, align 8, !tbaa !65
  %3749 = getelementptr inbounds <8 x double>, ptr %3748, i64 %3746
  %3750 = load <8 x double>, ptr %3749, align 64, !tbaa !26
  %3751 = load ptr, ptr %3692, align 16, !tbaa !48
  %3752 = getelementptr inbounds <8 x double>, ptr %3751, i64 %3746
  %3753 = fsub <8 x double> %3747, %3750
  %3754 = load ptr, ptr %3702, align 16, !tbaa !121
  %3755 = getelementptr inbounds <8 x double>, ptr %3754, i64 %3746
  %3756 = load <8 x double>, ptr %3755, align 64, !tbaa !26
  %3757 = fmul <8 x double> %3687, %3756
  %3758 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3753, <8 x double> %3757, <8 x double> %3750)
  %3759 = load <8 x double>, ptr %3752, align 64, !tbaa !26
  %3760 = select <8 x i1> %3696, <8 x double> %3759, <8 x double> %3758
  store <8 x double> %3760, ptr %3752, align 64, !tbaa !26
  %3761 = add nsw i64 %3746, 1
  %3762 = icmp eq i64 %3761, %3647
  br i1 %3762, label %3703, label %3745, !llvm.loop !122

3763:                                             ; preds = %3741, %3898
  %3764 = phi i64 [ 0, %3741 ], [ %3899, %3898 ]
  %3765 = getelementptr inbounds nuw i64, ptr %12, i64 %3764
  %3766 = load i64, ptr %3765, align 8, !tbaa !30
  %3767 = icmp eq i64 %3766, 0
  br i1 %3767, label %3898, label %3768

3768:                                             ; preds = %3763
  %3769 = load i64, ptr %141, align 16, !tbaa !21
  %3770 = load i64, ptr %3652, align 64, !tbaa !31
  %3771 = getelementptr inbounds nuw double, ptr %3685, i64 %3764
  %3772 = load double, ptr %3771, align 8, !tbaa !43
  %3773 = getelementptr inbounds nuw double, ptr %3675, i64 %3764
  %3774 = load double, ptr %3773, align 8, !tbaa !43
  %3775 = add nsw i64 %3769, -1
  %3776 = icmp sgt i64 %3769, %3770
  br i1 %3776, label %3777, label %3898

3777:                                             ; preds = %3768
  %3778 = getelementptr inbounds nuw double, ptr %3650, i64 %3764
  %3779 = load double, ptr %3778, align 8, !tbaa !43
  %3780 = getelementptr inbounds nuw double, ptr %3648, i64 %3764
  %3781 = load double, ptr %3780, align 8, !tbaa !43
  %3782 = load ptr, ptr %3742, align 32
  %3783 = getelementptr i8, ptr %3782, i64 64
  %3784 = getelementptr double, ptr %3783, i64 %3764
  %3785 = fsub double %3779, %3772
  %3786 = getelementptr double, ptr %3782, i64 %3764
  %3787 = fsub double %3781, %3772
  %3788 = load ptr, ptr %3688, align 8, !tbaa !65
  %3789 = getelementptr double, ptr %3788, i64 %3764
  %3790 = load ptr, ptr %3692, align 16, !tbaa !48
  %3791 = getelementptr double, ptr %3790, i64 %3764
  %3792 = getelementptr <8 x double>, ptr %3786, i64 %3775
  br label %3820

3793:                                             ; preds = %3866
  %3794 = getelementptr inbounds nuw double, ptr %3678, i64 %3764
  %3795 = load double, ptr %3794, align 8, !tbaa !43
  %3796 = fcmp ogt double %3795, 0.000000e+00
  %3797 = fcmp ogt double %3877, 0.000000e+00
  %3798 = select i1 %3796, i1 %3797, i1 false
  br i1 %3798, label %3799, label %3898

3799:                                             ; preds = %3793
  %3800 = getelementptr inbounds nuw double, ptr %3743, i64 %3764
  %3801 = getelementptr inbounds nuw double, ptr %3744, i64 %3764
  %3802 = sub i64 %3769, %3770
  %3803 = add i64 %3770, 1
  %3804 = and i64 %3802, 1
  %3805 = icmp eq i64 %3804, 0
  br i1 %3805, label %3815, label %3806

3806:                                             ; preds = %3799
  %3807 = load double, ptr %3800, align 8, !tbaa !43
  %3808 = load double, ptr %3801, align 8, !tbaa !43
  %3809 = fmul double %3877, %3808
  %3810 = fdiv double %3807, %3809
  %3811 = getelementptr <8 x double>, ptr %3791, i64 %3770
  %3812 = load double, ptr %3811, align 8, !tbaa !43
  %3813 = fmul double %3812, %3810
  store double %3813, ptr %3811, align 8, !tbaa !43
  %3814 = add nsw i64 %3770, 1
  br label %3815

3815:                                             ; preds = %3806, %3799
  %3816 = phi i64 [ %3770, %3799 ], [ %3814, %3806 ]
  %3817 = icmp eq i64 %3769, %3803
  br i1 %3817, label %3898, label %3818

3818:                                             ; preds = %3815
  %3819 = getelementptr i8, ptr %3791, i64 64
  br label %3880

3820:                                             ; preds = %3866, %3777
  %3821 = phi double [ 0.000000e+00, %3777 ], [ %3877, %3866 ]
  %3822 = phi i64 [ %3775, %3777 ], [ %3878, %3866 ]
  %3823 = icmp eq i64 %3822, %3775
  br i1 %3823, label %3824, label %3827

3824:                                             ; preds = %3820
  %3825 = load double, ptr %3792, align 8, !tbaa !43
  %3826 = tail call noundef double @llvm.fmuladd.f64(double %3825, double %3785, double %3772)
  br label %3838

3827:                                             ; preds = %3820
  %3828 = getelementptr <8 x double>, ptr %3784, i64 %3822
  %3829 = load double, ptr %3828, align 8, !tbaa !43
  %3830 = tail call noundef double @llvm.fmuladd.f64(double %3829, double %3785, double %3772)
  %3831 = getelementptr <8 x double>, ptr %3786, i64 %3822
  %3832 = load double, ptr %3831, align 8, !tbaa !43
  %3833 = tail call noundef double @llvm.fmuladd.f64(double %3832, double %3785, double %3772)
  %3834 = tail call noundef double @llvm.fmuladd.f64(double %3829, double %3787, double %3772)
  %3835 = fcmp ult double %3834, %3830
  br i1 %3835, label %3836, label %3838

3836:                                             ; preds = %3827
  %3837 = add nsw i64 %3822, 1
  br label %3838

3838:                                             ; preds = %3836, %3827, %3824
  %3839 = phi double [ %3833, %3836 ], [ %3833, %3827 ], [ %3826, %3824 ]
  %3840 = phi double [ %3830, %3836 ], [ %3830, %3827 ], [ %3774, %3824 ]
  %3841 = phi i64 [ %3837, %3836 ], [ %3822, %3827 ], [ %3775, %3824 ]
  %3842 = icmp sgt i64 %3841, %3770
  br i1 %3842, label %3843, label %3866

3843:                                             ; preds = %3838
  %3844 = load ptr, ptr %3688, align 8
  %3845 = getelementptr double, ptr %3844, i64 %3764
  br label %3846

3846:                                             ; preds = %3861, %3843
  %3847 = phi i64 [ %3841, %3843 ], [ %3864, %3861 ]
  %3848 = phi double [ 0.000000e+00, %3843 ], [ %3863, %3861 ]
  %3849 = phi double [ %3840, %3843 ], [ %3862, %3861 ]
  %3850 = getelementptr <8 x double>, ptr %3786, i64 %3847
  %3851 = load double, ptr %3850, align 8, !tbaa !43
  %3852 = tail call noundef double @llvm.fmuladd.f64(double %3851, double %3787, double %3772)
  %3853 = fcmp ogt double %3852, %3839
  br i1 %3853, label %3854, label %3866

3854:                                             ; preds = %3846
  %3855 = fcmp ogt double %3849, %3852
  br i1 %3855, label %3856, label %3861

3856:                                             ; preds = %3854
  %3857 = getelementptr <8 x double>, ptr %3845, i64 %3847
  %3858 = load double, ptr %3857, align 8, !tbaa !43
  %3859 = fsub double %3849, %3852
  %3860 = tail call double @llvm.fmuladd.f64(double %3858, double %3859, double %3848)
  br label %3861

3861:                                             ; preds = %3856, %3854
  %3862 = phi double [ %3852, %3856 ], [ %3849, %3854 ]
  %3863 = phi double [ %3860, %3856 ], [ %3848, %3854 ]
  %3864 = add nsw i64 %3847, -1
  %3865 = icmp sgt i64 %3864, %3770
  br i1 %3865, label %3846, label %3866, !llvm.loop !123

3866:                                             ; preds = %3861, %3846, %3838
  %3867 = phi double [ %3840, %3838 ], [ %3849, %3846 ], [ %3862, %3861 ]
  %3868 = phi double [ 0.000000e+00, %3838 ], [ %3848, %3846 ], [ %3863, %3861 ]
  %3869 = phi i64 [ %3841, %3838 ], [ %3847, %3846 ], [ %3770, %3861 ]
  %3870 = getelementptr <8 x double>, ptr %3789, i64 %3869
  %3871 = load double, ptr %3870, align 8, !tbaa !43
  %3872 = fsub double %3867, %3839
  %3873 = tail call double @llvm.fmuladd.f64(double %3871, double %3872, double %3868)
  %3874 = fsub double %3840, %3839
  %3875 = fdiv double %3873, %3874
  %3876 = getelementptr <8 x double>, ptr %3791, i64 %3822
  store double %3875, ptr %3876, align 8, !tbaa !43
  %3877 = fadd double %3821, %3873
  %3878 = add nsw i64 %3822, -1
  %3879 = icmp sgt i64 %3822, %3770
  br i1 %3879, label %3820, label %3793, !llvm.loop !124

3880:                                             ; preds = %3880, %3818
  %3881 = phi i64 [ %3816, %3818 ], [ %3896, %3880 ]
  %3882 = load double, ptr %3800, align 8, !tbaa !43
  %3883 = load double, ptr %3801, align 8, !tbaa !43
  %3884 = fmul double %3877, %3883
  %3885 = fdiv double %3882, %3884
  %3886 = getelementptr <8 x double>, ptr %3791, i64 %3881
  %3887 = load double, ptr %3886, align 8, !tbaa !43
  %3888 = fmul double %3887, %3885
  store double %3888, ptr %3886, align 8, !tbaa !43
  %3889 = load double, ptr %3800, align 8, !tbaa !43
  %3890 = load double, ptr %3801, align 8, !tbaa !43
  %3891 = fmul double %3877, %3890
  %3892 = fdiv double %3889, %3891
  %3893 = getelementptr <8 x double>, ptr %3819, i64 %3881
  %3894 = load double, ptr %3893, align 8, !tbaa !43
  %3895 = fmul double %3894, %3892
  store double %3895, ptr %3893, align 8, !tbaa !43
  %3896 = add nsw i64 %3881, 2
  %3897 = icmp eq i64 %3896, %3769
  br i1 %3897, label %3898, label %3880, !llvm.loop !125

3898:                                             ; preds = %3815, %3880, %3793, %3768, %3763
  %3899 = add nuw nsw i64 %3764, 1
  %3900 = icmp eq i64 %3899, 8
  br i1 %3900, label %3901, label %3763, !llvm.loop !126

3901:                                             ; preds = %3898, %3724
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  %3902 = load i64, ptr %141, align 16, !tbaa !21
  br label %3903

3903:                                             ; preds = %3636, %3901
  %3904 = phi i64 [ %3645, %3636 ], [ %3902, %3901 ]
  %3905 = getelementptr inbounds nuw i8, ptr %3639, i64 7560
  %3906 = load ptr, ptr %3905, align 8, !tbaa !58
  %3907 = getelementptr inbounds nuw i8, ptr %3639, i64 7568
  %3908 = load ptr, ptr %3907, align 16, !tbaa !47
  %3909 = getelementptr inbounds nuw i8, ptr %3639, i64 7576
  %3910 = load ptr, ptr %3909, align 8, !tbaa !57
  %3911 = icmp sgt i64 %3904, 0
  br i1 %3911, label %3922, label %3912

3912:                                             ; preds = %3922, %3903
  %3913 = load i64, ptr %142, align 8, !tbaa !22
  %3914 = icmp sgt i64 %3913, 0
  br i1 %3914, label %3915, label %3935

3915:                                             ; preds = %3912
  %3916 = getelementptr inbounds nuw i8, ptr %3639, i64 7744
  %3917 = getelementptr inbounds nuw i8, ptr %3639, i64 7736
  %3918 = getelementptr inbounds nuw i8, ptr %3639, i64 7728
  %3919 = getelementptr inbounds nuw i8, ptr %3639, i64 7696
  %3920 = getelementptr inbounds nuw i8, ptr %3639, i64 7688
  %3921 = getelementptr inbounds nuw i8, ptr %3639, i64 7680
  br label %3939

3922:                                             ; preds = %3903, %3922
  %3923 = phi i64 [ %3932, %3922 ], [ 0, %3903 ]
  %3924 = getelementptr inbounds nuw <8 x double>, ptr %3908, i64 %3923
  %3925 = load <8 x double>, ptr %3924, align 64, !tbaa !26
  %3926 = getelementptr inbounds nuw <8 x double>, ptr %3910, i64 %3923
  %3927 = load <8 x double>, ptr %3926, align 64, !tbaa !26
  %3928 = select <8 x i1> %3607, <8 x double> %3927, <8 x double> %3925
  store <8 x double> %3928, ptr %3926, align 64, !tbaa !26
  %3929 = getelementptr inbounds nuw <8 x double>, ptr %3906, i64 %3923
  %3930 = load <8 x double>, ptr %3929, align 64, !tbaa !26
  %3931 = select <8 x i1> %3607, <8 x double> %3925, <8 x double> %3930
  store <8 x double> %3931, ptr %3924, align 64, !tbaa !26
  %3932 = add nuw nsw i64 %3923, 1
  %3933 = load i64, ptr %141, align 16, !tbaa !21
  %3934 = icmp slt i64 %3932, %3933
  br i1 %3934, label %3922, label %3912, !llvm.loop !127

3935:                                             ; preds = %3939, %3912
  %3936 = getelementptr inbounds nuw i8, ptr %3639, i64 4480
  %3937 = getelementptr inbounds nuw i8, ptr %3639, i64 3712
  %3938 = getelementptr inbounds nuw i8, ptr %3639, i64 2944
  br label %3987

3939:                                             ; preds = %3915, %3939
  %3940 = phi i64 [ 0, %3915 ], [ %3969, %3939 ]
  %3941 = load ptr, ptr %3916, align 64, !tbaa !60
  %3942 = getelementptr inbounds nuw <8 x double>, ptr %3941, i64 %3940
  %3943 = load ptr, ptr %3917, align 8, !tbaa !50
  %3944 = getelementptr inbounds nuw <8 x double>, ptr %3943, i64 %3940
  %3945 = load <8 x double>, ptr %3944, align 64, !tbaa !26
  %3946 = load <8 x double>, ptr %3942, align 64, !tbaa !26
  %3947 = select <8 x i1> %3607, <8 x double> %3946, <8 x double> %3945
  store <8 x double> %3947, ptr %3942, align 64, !tbaa !26
  %3948 = load ptr, ptr %3917, align 8, !tbaa !50
  %3949 = getelementptr inbounds nuw <8 x double>, ptr %3948, i64 %3940
  %3950 = load ptr, ptr %3918, align 16, !tbaa !80
  %3951 = getelementptr inbounds nuw <8 x double>, ptr %3950, i64 %3940
  %3952 = load <8 x double>, ptr %3951, align 64, !tbaa !26
  %3953 = load <8 x double>, ptr %3949, align 64, !tbaa !26
  %3954 = select <8 x i1> %3607, <8 x double> %3953, <8 x double> %3952
  store <8 x double> %3954, ptr %3949, align 64, !tbaa !26
  %3955 = load ptr, ptr %3919, align 16, !tbaa !62
  %3956 = getelementptr inbounds nuw <8 x double>, ptr %3955, i64 %3940
  %3957 = load ptr, ptr %3920, align 8, !tbaa !51
  %3958 = getelementptr inbounds nuw <8 x double>, ptr %3957, i64 %3940
  %3959 = load <8 x double>, ptr %3958, align 64, !tbaa !26
  %3960 = load <8 x double>, ptr %3956, align 64, !tbaa !26
  %3961 = select <8 x i1> %3607, <8 x double> %3960, <8 x double> %3959
  store <8 x double> %3961, ptr %3956, align 64, !tbaa !26
  %3962 = load ptr, ptr %3920, align 8, !tbaa !51
  %3963 = getelementptr inbounds nuw <8 x double>, ptr %3962, i64 %3940
  %3964 = load ptr, ptr %3921, align 64, !tbaa !111
  %3965 = getelementptr inbounds nuw <8 x double>, ptr %3964, i64 %3940
  %3966 = load <8 x double>, ptr %3965, align 64, !tbaa !26
  %3967 = load <8 x double>, ptr %3963, align 64, !tbaa !26
  %3968 = select <8 x i1> %3607, <8 x double> %3967, <8 x double> %3966
  store <8 x double> %3968, ptr %3963, align 64, !tbaa !26
  %3969 = add nuw nsw i64 %3940, 1
  %3970 = load i64, ptr %142, align 8, !tbaa !22
  %3971 = icmp slt i64 %3969, %3970
  br i1 %3971, label %3939, label %3935, !llvm.loop !128

3972:                                             ; preds = %3987
  %3973 = getelementptr inbounds nuw i8, ptr %3639, i64 7424
  %3974 = getelementptr inbounds nuw i8, ptr %3639, i64 5696
  %3975 = load <8 x double>, ptr %3974, align 64, !tbaa !26
  %3976 = fcmp ogt <8 x double> %3975, zeroinitializer
  %3977 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3978 = fcmp une <8 x double> %3977, splat (double 2.000000e+00)
  %3979 = and <8 x i1> %3976, %3978
  %3980 = select <8 x i1> %3979, <8 x i64> %3547, <8 x i64> zeroinitializer
  %3981 = load <8 x i64>, ptr %3973, align 64, !tbaa !26
  %3982 = and <8 x i64> %3981, %3635
  %3983 = or <8 x i64> %3980, %3982
  store <8 x i64> %3983, ptr %3973, align 64, !tbaa !26
  %3984 = add nuw nsw i64 %3637, 1
  %3985 = load i64, ptr %166, align 8, !tbaa !20
  %3986 = icmp slt i64 %3984, %3985
  br i1 %3986, label %3636, label %3999, !llvm.loop !129

3987:                                             ; preds = %3935, %3987
  %3988 = phi i64 [ 0, %3935 ], [ %3997, %3987 ]
  %3989 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3936, i64 0, i64 %3988
  %3990 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3937, i64 0, i64 %3988
  %3991 = load <8 x double>, ptr %3990, align 64, !tbaa !26
  %3992 = load <8 x double>, ptr %3989, align 64, !tbaa !26
  %3993 = select <8 x i1> %3607, <8 x double> %3992, <8 x double> %3991
  store <8 x double> %3993, ptr %3989, align 64, !tbaa !26
  %3994 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3938, i64 0, i64 %3988
  %3995 = load <8 x double>, ptr %3994, align 64, !tbaa !26
  %3996 = select <8 x i1> %3607, <8 x double> %3991, <8 x double> %3995
  store <8 x double> %3996, ptr %3990, align 64, !tbaa !26
  %3997 = add nuw nsw i64 %3988, 1
  %3998 = icmp eq i64 %3997, 12
  br i1 %3998, label %3972, label %3987, !llvm.loop !130

3999:                                             ; preds = %3972
  %4000 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %4001 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %4002 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %4003 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %4004 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %4005 = fdiv <8 x double> %4002, %3267
  %4006 = icmp sgt i64 %3985, 0
  br label %4007

4007:                                             ; preds = %3606, %3999
  %4008 = phi <8 x double> [ %4005, %3999 ], [ %3277, %3606 ]
  %4009 = phi i1 [ %4006, %3999 ], [ false, %3606 ]
  %4010 = phi <8 x double> [ %4004, %3999 ], [ %3256, %3606 ]
  %4011 = phi <8 x double> [ %4003, %3999 ], [ %3535, %3606 ]
  %4012 = phi <8 x double> [ %4001, %3999 ], [ %3273, %3606 ]
  %4013 = phi <8 x double> [ %4000, %3999 ], [ %3271, %3606 ]
  %4014 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4015 = fadd <8 x double> %4014, %4013
  %4016 = select <8 x i1> %3607, <8 x double> %4014, <8 x double> %4015
  store <8 x double> %4016, ptr %158, align 64, !tbaa !26
  %4017 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %4018 = select <8 x i1> %3607, <8 x double> %4017, <8 x double> %4013
  store <8 x double> %4018, ptr %167, align 64, !tbaa !26
  %4019 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4020 = fadd <8 x double> %4019, splat (double 1.000000e+00)
  %4021 = select <8 x i1> %3607, <8 x double> %4019, <8 x double> %4020
  store <8 x double> %4021, ptr %145, align 64, !tbaa !26
  %4022 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4023 = fcmp olt <8 x double> %4022, %4013
  %4024 = select <8 x i1> %3607, <8 x i1> splat (i1 true), <8 x i1> %4023
  %4025 = select <8 x i1> %4024, <8 x double> %4022, <8 x double> %4013
  store <8 x double> %4025, ptr %147, align 64, !tbaa !26
  %4026 = fcmp une <8 x double> %4012, zeroinitializer
  %4027 = fcmp ueq <8 x double> %3266, zeroinitializer
  %4028 = or <8 x i1> %4027, %4026
  %4029 = fcmp olt <8 x double> %4008, splat (double 1.800000e+00)
  %4030 = select <8 x i1> %4029, <8 x double> %4008, <8 x double> splat (double 1.800000e+00)
  %4031 = select <8 x i1> %4028, <8 x double> splat (double 1.800000e+00), <8 x double> %4030
  %4032 = fcmp ogt <8 x double> %4031, splat (double 2.000000e-01)
  %4033 = select <8 x i1> %4032, <8 x double> %4031, <8 x double> splat (double 2.000000e-01)
  %4034 = fmul <8 x double> %4013, %4033
  %4035 = fmul <8 x double> %4013, splat (double 4.000000e+00)
  %4036 = fcmp olt <8 x double> %4011, %4035
  %4037 = select <8 x i1> %4036, <8 x double> %4011, <8 x double> %4035
  %4038 = fcmp ogt <8 x double> %4034, %4037
  %4039 = select <8 x i1> %4038, <8 x double> %4034, <8 x double> %4037
  %4040 = select <8 x i1> %3607, <8 x double> %4011, <8 x double> zeroinitializer
  store <8 x double> %4040, ptr %165, align 64, !tbaa !26
  %4041 = select <8 x i1> %3607, <8 x double> %4010, <8 x double> zeroinitializer
  store <8 x double> %4041, ptr %227, align 64, !tbaa !26
  %4042 = load <8 x i64>, ptr %169, align 64, !tbaa !26
  %4043 = and <8 x i64> %4042, %3635
  store <8 x i64> %4043, ptr %169, align 64, !tbaa !26
  br i1 %4009, label %4044, label %4341

4044:                                             ; preds = %4007, %4334
  %4045 = phi i64 [ %4336, %4334 ], [ 0, %4007 ]
  %4046 = phi <8 x double> [ %4335, %4334 ], [ %4039, %4007 ]
  %4047 = load ptr, ptr %151, align 8, !tbaa !28
  %4048 = getelementptr inbounds nuw %struct.Piece, ptr %4047, i64 %4045
  %4049 = getelementptr inbounds nuw i8, ptr %4048, i64 3776
  %4050 = load <8 x double>, ptr %4049, align 64, !tbaa !26
  %4051 = getelementptr inbounds nuw i8, ptr %4048, i64 1472
  %4052 = load <8 x double>, ptr %4051, align 64, !tbaa !26
  %4053 = fmul <8 x double> %4052, splat (double 1.001000e+00)
  %4054 = fcmp ole <8 x double> %4050, %4053
  %4055 = getelementptr inbounds nuw i8, ptr %4048, i64 1600
  %4056 = load <8 x double>, ptr %4055, align 64, !tbaa !26
  %4057 = getelementptr inbounds nuw i8, ptr %4048, i64 4032
  %4058 = load <8 x double>, ptr %4057, align 64, !tbaa !26
  %4059 = fsub <8 x double> %4056, %4058
  %4060 = fmul <8 x double> %4056, splat (double 1.000000e-04)
  %4061 = fcmp ole <8 x double> %4059, %4060
  %4062 = getelementptr inbounds nuw i8, ptr %4048, i64 7360
  %4063 = load <8 x i64>, ptr %4062, align 64, !tbaa !26
  %4064 = and <8 x i64> %4063, %3547
  %4065 = getelementptr inbounds nuw i8, ptr %4048, i64 7296
  %4066 = load <8 x double>, ptr %4065, align 64, !tbaa !26
  %4067 = fcmp oeq <8 x double> %4066, zeroinitializer
  %4068 = and <8 x i1> %4054, %4067
  %4069 = fcmp oeq <8 x double> %4066, splat (double 1.000000e+00)
  %4070 = and <8 x i1> %4061, %4069
  %4071 = or <8 x i1> %4068, %4070
  %4072 = select <8 x i1> %4071, <8 x i64> %4064, <8 x i64> zeroinitializer
  %4073 = fadd <8 x double> %4066, splat (double 1.000000e+00)
  %4074 = icmp eq <8 x i64> %4072, zeroinitializer
  %4075 = select <8 x i1> %4074, <8 x double> %4066, <8 x double> %4073
  store <8 x double> %4075, ptr %4065, align 64, !tbaa !26
  %4076 = getelementptr inbounds nuw i8, ptr %4048, i64 7424
  %4077 = load <8 x i64>, ptr %4076, align 64, !tbaa !26
  %4078 = or <8 x i64> %4072, %4077
  store <8 x i64> %4078, ptr %4076, align 64, !tbaa !26
  %4079 = getelementptr inbounds nuw i8, ptr %4048, i64 896
  %4080 = load <8 x double>, ptr %4079, align 64, !tbaa !26
  %4081 = getelementptr inbounds nuw i8, ptr %4048, i64 5632
  %4082 = load <8 x double>, ptr %4081, align 64, !tbaa !26
  %4083 = getelementptr inbounds nuw i8, ptr %4048, i64 5696
  %4084 = load <8 x double>, ptr %4083, align 64, !tbaa !26
  %4085 = fadd <8 x double> %4082, %4084
  %4086 = fcmp ogt <8 x double> %4085, zeroinitializer
  %4087 = xor <8 x i64> %4063, splat (i64 -1)
  %4088 = and <8 x i64> %3547, %4087
  %4089 = fcmp une <8 x double> %4080, zeroinitializer
  %4090 = or <8 x i1> %4089, %4086
  %4091 = getelementptr inbounds nuw i8, ptr %4048, i64 3840
  %4092 = load <8 x double>, ptr %4091, align 64, !tbaa !26
  %4093 = fmul <8 x double> %4080, splat (double 1.000000e-04)
  %4094 = fcmp ogt <8 x double> %4093, splat (double 0x3E7AD7F29ABCAF48)
  %4095 = select <8 x i1> %4094, <8 x double> %4093, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4096 = fcmp ole <8 x double> %4092, %4095
  %4097 = select <8 x i1> %4096, <8 x i1> %4090, <8 x i1> zeroinitializer
  %4098 = select <8 x i1> %4097, <8 x i64> %4088, <8 x i64> zeroinitializer
  %4099 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4098)
  %4100 = icmp eq i64 %4099, 0
  br i1 %4100, label %4334, label %4101

4101:                                             ; preds = %4044
  %4102 = load i64, ptr %141, align 16, !tbaa !21
  %4103 = load i64, ptr %142, align 8, !tbaa !22
  %4104 = getelementptr inbounds nuw i8, ptr %4048, i64 4416
  %4105 = load <8 x double>, ptr %4104, align 64, !tbaa !26
  %4106 = getelementptr inbounds nuw i8, ptr %4048, i64 5568
  %4107 = load <8 x double>, ptr %4106, align 64, !tbaa !26
  %4108 = getelementptr inbounds nuw i8, ptr %4048, i64 832
  %4109 = load <8 x double>, ptr %4108, align 64, !tbaa !26
  %4110 = getelementptr inbounds nuw i8, ptr %4048, i64 7600
  %4111 = load ptr, ptr %4110, align 16, !tbaa !48
  %4112 = add nsw i64 %4102, -1
  %4113 = getelementptr inbounds <8 x double>, ptr %4111, i64 %4112
  %4114 = load <8 x double>, ptr %4113, align 64, !tbaa !26
  %4115 = fmul <8 x double> %4109, %4114
  %4116 = fneg <8 x double> %4092
  %4117 = fdiv <8 x double> %4116, %4115
  %4118 = fcmp ogt <8 x double> %4117, splat (double 0x3E7AD7F29ABCAF48)
  %4119 = select <8 x i1> %4118, <8 x double> %4117, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4120 = load <8 x double>, ptr %4048, align 64, !tbaa !26
  %4121 = fsub <8 x double> %4120, %4119
  %4122 = getelementptr inbounds nuw i8, ptr %4048, i64 2560
  %4123 = load <8 x double>, ptr %4122, align 64, !tbaa !26
  %4124 = getelementptr inbounds nuw i8, ptr %4048, i64 2624
  %4125 = load <8 x double>, ptr %4124, align 64, !tbaa !26
  %4126 = getelementptr inbounds nuw i8, ptr %4048, i64 2688
  %4127 = load <8 x double>, ptr %4126, align 64, !tbaa !26
  %4128 = getelementptr inbounds nuw i8, ptr %4048, i64 2752
  %4129 = load <8 x double>, ptr %4128, align 64, !tbaa !26
  %4130 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4121, <8 x double> %4129, <8 x double> %4127)
  %4131 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4121, <8 x double> %4130, <8 x double> %4125)
  %4132 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4121, <8 x double> %4131, <8 x double> %4123)
  %4133 = getelementptr inbounds nuw i8, ptr %4048, i64 7568
  %4134 = load ptr, ptr %4133, align 16, !tbaa !47
  %4135 = getelementptr inbounds <8 x double>, ptr %4134, i64 %4112
  %4136 = load <8 x double>, ptr %4135, align 64, !tbaa !26
  %4137 = getelementptr inbounds nuw i8, ptr %4048, i64 7552
  %4138 = load i64, ptr %4137, align 64, !tbaa !31
  %4139 = icmp sgt i64 %4102, %4138
  br i1 %4139, label %4143, label %4140

4140:                                             ; preds = %4101
  %4141 = getelementptr inbounds nuw i8, ptr %4048, i64 640
  %4142 = load <8 x double>, ptr %4141, align 64, !tbaa !26
  br label %4154

4143:                                             ; preds = %4101
  %4144 = getelementptr inbounds nuw i8, ptr %4048, i64 384
  %4145 = load <8 x double>, ptr %4144, align 64, !tbaa !26
  %4146 = getelementptr inbounds nuw i8, ptr %4048, i64 448
  %4147 = load <8 x double>, ptr %4146, align 64, !tbaa !26
  %4148 = getelementptr inbounds nuw i8, ptr %4048, i64 512
  %4149 = load <8 x double>, ptr %4148, align 64, !tbaa !26
  %4150 = fmul <8 x double> %4136, %4149
  %4151 = fmul <8 x double> %4150, splat (double 0x3FD5555555555555)
  %4152 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4147, <8 x double> splat (double 5.000000e-01), <8 x double> %4151)
  %4153 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4136, <8 x double> %4152, <8 x double> %4145)
  br label %4154

4154:                                             ; preds = %4143, %4140
  %4155 = phi <8 x double> [ %4142, %4140 ], [ %4153, %4143 ]
  %4156 = fmul <8 x double> %4136, %4155
  %4157 = icmp sgt i64 %4102, 0
  br i1 %4157, label %4158, label %4168

4158:                                             ; preds = %4154
  %4159 = getelementptr inbounds nuw i8, ptr %4048, i64 640
  %4160 = getelementptr inbounds nuw i8, ptr %4048, i64 384
  %4161 = getelementptr inbounds nuw i8, ptr %4048, i64 448
  %4162 = getelementptr inbounds nuw i8, ptr %4048, i64 512
  %4163 = getelementptr inbounds nuw i8, ptr %4048, i64 1536
  %4164 = getelementptr inbounds nuw i8, ptr %4048, i64 7648
  %4165 = icmp eq <8 x i64> %4098, zeroinitializer
  br label %4180

4166:                                             ; preds = %4259
  %4167 = load <8 x double>, ptr %4048, align 64, !tbaa !26
  br label %4168

4168:                                             ; preds = %4166, %4154
  %4169 = phi <8 x double> [ %4167, %4166 ], [ %4120, %4154 ]
  %4170 = fsub <8 x double> %4169, %4121
  %4171 = sitofp i64 %4103 to double
  %4172 = insertelement <8 x double> poison, double %4171, i64 0
  %4173 = shufflevector <8 x double> %4172, <8 x double> poison, <8 x i32> zeroinitializer
  %4174 = fdiv <8 x double> %4170, %4173
  %4175 = icmp sgt i64 %4103, 0
  br i1 %4175, label %4176, label %4290

4176:                                             ; preds = %4168
  %4177 = getelementptr inbounds nuw i8, ptr %4048, i64 7736
  %4178 = icmp eq <8 x i64> %4098, zeroinitializer
  %4179 = getelementptr inbounds nuw i8, ptr %4048, i64 7688
  br label %4267

4180:                                             ; preds = %4158, %4259
  %4181 = phi <8 x double> [ %4136, %4158 ], [ %4229, %4259 ]
  %4182 = phi <8 x double> [ %4156, %4158 ], [ %4230, %4259 ]
  %4183 = phi <8 x double> [ %4132, %4158 ], [ %4228, %4259 ]
  %4184 = phi i64 [ %4112, %4158 ], [ %4265, %4259 ]
  %4185 = icmp eq i64 %4184, 0
  br i1 %4185, label %4227, label %4186

4186:                                             ; preds = %4180
  %4187 = load ptr, ptr %4133, align 16, !tbaa !47
  %4188 = getelementptr <8 x double>, ptr %4187, i64 %4184
  %4189 = getelementptr i8, ptr %4188, i64 -64
  %4190 = load <8 x double>, ptr %4189, align 64, !tbaa !26
  %4191 = load i64, ptr %4137, align 64, !tbaa !31
  %4192 = icmp sgt i64 %4184, %4191
  br i1 %4192, label %4195, label %4193

4193:                                             ; preds = %4186
  %4194 = load <8 x double>, ptr %4159, align 64, !tbaa !26
  br label %4203

4195:                                             ; preds = %4186
  %4196 = load <8 x double>, ptr %4160, align 64, !tbaa !26
  %4197 = load <8 x double>, ptr %4161, align 64, !tbaa !26
  %4198 = load <8 x double>, ptr %4162, align 64, !tbaa !26
  %4199 = fmul <8 x double> %4190, %4198
  %4200 = fmul <8 x double> %4199, splat (double 0x3FD5555555555555)
  %4201 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4197, <8 x double> splat (double 5.000000e-01), <8 x double> %4200)
  %4202 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4190, <8 x double> %4201, <8 x double> %4196)
  br label %4203

4203:                                             ; preds = %4193, %4195
  %4204 = phi <8 x double> [ %4202, %4195 ], [ %4194, %4193 ]
  %4205 = fmul <8 x double> %4190, %4204
  %4206 = icmp slt i64 %4184, %4191
  br i1 %4206, label %4207, label %4214

4207:                                             ; preds = %4203
  %4208 = load ptr, ptr %4164, align 32, !tbaa !72
  %4209 = getelementptr inbounds nuw <8 x double>, ptr %4208, i64 %4184
  %4210 = load <8 x double>, ptr %4209, align 64, !tbaa !26
  %4211 = load <8 x double>, ptr %4163, align 64, !tbaa !26
  %4212 = fmul <8 x double> %4210, %4211
  %4213 = fmul <8 x double> %4210, %4211
  br label %4223

4214:                                             ; preds = %4203
  %4215 = load <8 x double>, ptr %4163, align 64, !tbaa !26
  %4216 = load ptr, ptr %4164, align 32, !tbaa !72
  %4217 = getelementptr inbounds nuw <8 x double>, ptr %4216, i64 %4184
  %4218 = load <8 x double>, ptr %4217, align 64, !tbaa !26
  %4219 = fsub <8 x double> %4132, %4215
  %4220 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4218, <8 x double> %4219, <8 x double> %4215)
  %4221 = fsub <8 x double> %4105, %4215
  %4222 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4218, <8 x double> %4221, <8 x double> %4215)
  br label %4223

4223:                                             ; preds = %4214, %4207
  %4224 = phi <8 x double> [ %4212, %4207 ], [ %4220, %4214 ]
  %4225 = phi <8 x double> [ %4213, %4207 ], [ %4222, %4214 ]
  %4226 = fsub <8 x double> %4225, %4224
  br label %4227

4227:                                             ; preds = %4180, %4223
  %4228 = phi <8 x double> [ %4224, %4223 ], [ zeroinitializer, %4180 ]
  %4229 = phi <8 x double> [ %4190, %4223 ], [ %4181, %4180 ]
  %4230 = phi <8 x double> [ %4205, %4223 ], [ %4182, %4180 ]
  %4231 = phi <8 x double> [ %4226, %4223 ], [ zeroinitializer, %4180 ]
  %4232 = fsub <8 x double> %4183, %4228
  %4233 = fdiv <8 x double> %4231, %4232
  %4234 = fsub <8 x double> %4230, %4182
  %4235 = fmul <8 x double> %4234, %4233
  %4236 = load ptr, ptr %4110, align 16, !tbaa !48
  %4237 = getelementptr inbounds nuw <8 x double>, ptr %4236, i64 %4184
  %4238 = load <8 x double>, ptr %4237, align 64, !tbaa !26
  br i1 %4185, label %4242, label %4239

4239:                                             ; preds = %4227
  %4240 = getelementptr i8, ptr %4237, i64 -64
  %4241 = load <8 x double>, ptr %4240, align 64, !tbaa !26
  br label %4242

4242:                                             ; preds = %4239, %4227
  %4243 = phi <8 x double> [ %4241, %4239 ], [ %4238, %4227 ]
  %4244 = fsub <8 x double> %4243, %4238
  %4245 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4244, <8 x double> %4233, <8 x double> %4238)
  %4246 = select <8 x i1> %4165, <8 x double> %4238, <8 x double> %4245
  store <8 x double> %4246, ptr %4237, align 64, !tbaa !26
  %4247 = load ptr, ptr %4133, align 16, !tbaa !47
  %4248 = getelementptr inbounds nuw <8 x double>, ptr %4247, i64 %4184
  %4249 = load i64, ptr %4137, align 64, !tbaa !31
  %4250 = icmp slt i64 %4184, %4249
  br i1 %4250, label %4251, label %4253

4251:                                             ; preds = %4242
  %4252 = load <8 x double>, ptr %4159, align 64, !tbaa !26
  br label %4259

4253:                                             ; preds = %4242
  %4254 = load <8 x double>, ptr %4160, align 64, !tbaa !26
  %4255 = load <8 x double>, ptr %4161, align 64, !tbaa !26
  %4256 = load <8 x double>, ptr %4162, align 64, !tbaa !26
  %4257 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4181, <8 x double> %4256, <8 x double> %4255)
  %4258 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4181, <8 x double> %4257, <8 x double> %4254)
  br label %4259

4259:                                             ; preds = %4253, %4251
  %4260 = phi <8 x double> [ %4252, %4251 ], [ %4258, %4253 ]
  %4261 = fdiv <8 x double> %4235, %4260
  %4262 = fadd <8 x double> %4181, %4261
  %4263 = load <8 x double>, ptr %4248, align 64, !tbaa !26
  %4264 = select <8 x i1> %4165, <8 x double> %4263, <8 x double> %4262
  store <8 x double> %4264, ptr %4248, align 64, !tbaa !26
  %4265 = add nsw i64 %4184, -1
  %4266 = icmp sgt i64 %4184, 0
  br i1 %4266, label %4180, label %4166, !llvm.loop !131

4267:                                             ; preds = %4176, %4267
  %4268 = phi i64 [ 0, %4176 ], [ %4288, %4267 ]
  %4269 = load ptr, ptr %4177, align 8, !tbaa !50
  %4270 = getelementptr inbounds nuw <8 x double>, ptr %4269, i64 %4268
  %4271 = uitofp nneg i64 %4268 to double
  %4272 = insertelement <8 x double> poison, double %4271, i64 0
  %4273 = shufflevector <8 x double> %4272, <8 x double> poison, <8 x i32> zeroinitializer
  %4274 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4273, <8 x double> %4174, <8 x double> %4121)
  %4275 = load <8 x double>, ptr %4122, align 64, !tbaa !26
  %4276 = load <8 x double>, ptr %4124, align 64, !tbaa !26
  %4277 = load <8 x double>, ptr %4126, align 64, !tbaa !26
  %4278 = load <8 x double>, ptr %4128, align 64, !tbaa !26
  %4279 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4274, <8 x double> %4278, <8 x double> %4277)
  %4280 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4274, <8 x double> %4279, <8 x double> %4276)
  %4281 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4274, <8 x double> %4280, <8 x double> %4275)
  %4282 = load <8 x double>, ptr %4270, align 64, !tbaa !26
  %4283 = select <8 x i1> %4178, <8 x double> %4282, <8 x double> %4281
  store <8 x double> %4283, ptr %4270, align 64, !tbaa !26
  %4284 = load ptr, ptr %4179, align 8, !tbaa !51
  %4285 = getelementptr inbounds nuw <8 x double>, ptr %4284, i64 %4268
  %4286 = load <8 x double>, ptr %4285, align 64, !tbaa !26
  %4287 = select <8 x i1> %4178, <8 x double> %4286, <8 x double> %4107
  store <8 x double> %4287, ptr %4285, align 64, !tbaa !26
  %4288 = add nuw nsw i64 %4268, 1
  %4289 = icmp eq i64 %4288, %4103
  br i1 %4289, label %4290, label %4267, !llvm.loop !132

4290:                                             ; preds = %4267, %4168
  %4291 = fsub <8 x double> %4105, %4132
  %4292 = getelementptr inbounds nuw i8, ptr %4048, i64 3712
  %4293 = getelementptr inbounds nuw i8, ptr %4048, i64 7736
  %4294 = load ptr, ptr %4293, align 8, !tbaa !50
  %4295 = getelementptr inbounds <8 x double>, ptr %4294, i64 %4103
  %4296 = getelementptr inbounds nuw i8, ptr %4048, i64 1408
  %4297 = load <8 x double>, ptr %4296, align 64, !tbaa !26
  %4298 = load <8 x double>, ptr %4295, align 64, !tbaa !26
  %4299 = icmp eq <8 x i64> %4098, zeroinitializer
  %4300 = select <8 x i1> %4299, <8 x double> %4298, <8 x double> %4297
  store <8 x double> %4300, ptr %4295, align 64, !tbaa !26
  %4301 = load <8 x double>, ptr %4292, align 64, !tbaa !26
  %4302 = select <8 x i1> %4299, <8 x double> %4301, <8 x double> %4121
  store <8 x double> %4302, ptr %4292, align 64, !tbaa !26
  %4303 = load <8 x double>, ptr %4049, align 64, !tbaa !26
  %4304 = select <8 x i1> %4299, <8 x double> %4303, <8 x double> %4132
  store <8 x double> %4304, ptr %4049, align 64, !tbaa !26
  %4305 = load <8 x double>, ptr %4104, align 64, !tbaa !26
  %4306 = select <8 x i1> %4299, <8 x double> %4305, <8 x double> %4132
  store <8 x double> %4306, ptr %4104, align 64, !tbaa !26
  %4307 = getelementptr inbounds nuw i8, ptr %4048, i64 3904
  %4308 = load <8 x double>, ptr %4307, align 64, !tbaa !26
  %4309 = fneg <8 x double> %4291
  %4310 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4309, <8 x double> %4115, <8 x double> %4308)
  %4311 = select <8 x i1> %4299, <8 x double> %4308, <8 x double> %4310
  store <8 x double> %4311, ptr %4307, align 64, !tbaa !26
  %4312 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4291, <8 x double> %4115, <8 x double> %4092)
  %4313 = load <8 x double>, ptr %4091, align 64, !tbaa !26
  %4314 = select <8 x i1> %4299, <8 x double> %4313, <8 x double> %4312
  store <8 x double> %4314, ptr %4091, align 64, !tbaa !26
  %4315 = getelementptr inbounds nuw i8, ptr %4048, i64 4160
  %4316 = load <8 x double>, ptr %4315, align 64, !tbaa !26
  %4317 = getelementptr inbounds nuw i8, ptr %4048, i64 768
  %4318 = load <8 x double>, ptr %4317, align 64, !tbaa !26
  %4319 = fneg <8 x double> %4318
  %4320 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4319, <8 x double> %4107, <8 x double> %4156)
  %4321 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4291, <8 x double> %4320, <8 x double> %4316)
  %4322 = select <8 x i1> %4299, <8 x double> %4316, <8 x double> %4321
  store <8 x double> %4322, ptr %4315, align 64, !tbaa !26
  %4323 = load <8 x i64>, ptr %4062, align 64, !tbaa !26
  %4324 = or <8 x i64> %4323, %4098
  store <8 x i64> %4324, ptr %4062, align 64, !tbaa !26
  %4325 = load <8 x i64>, ptr %4076, align 64, !tbaa !26
  %4326 = or <8 x i64> %4325, %4098
  store <8 x i64> %4326, ptr %4076, align 64, !tbaa !26
  %4327 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4328 = fmul <8 x double> %4327, splat (double 5.000000e+00)
  %4329 = fcmp olt <8 x double> %4046, %4328
  %4330 = select <8 x i1> %4329, <8 x double> %4046, <8 x double> %4328
  %4331 = icmp ne <8 x i64> %4098, zeroinitializer
  %4332 = select <8 x i1> %4089, <8 x i1> %4331, <8 x i1> zeroinitializer
  %4333 = select <8 x i1> %4332, <8 x double> %4330, <8 x double> %4046
  br label %4334

4334:                                             ; preds = %4290, %4044
  %4335 = phi <8 x double> [ %4333, %4290 ], [ %4046, %4044 ]
  %4336 = add nuw nsw i64 %4045, 1
  %4337 = load i64, ptr %166, align 8, !tbaa !20
  %4338 = icmp slt i64 %4336, %4337
  br i1 %4338, label %4044, label %4339, !llvm.loop !133

4339:                                             ; preds = %4334
  %4340 = load <8 x double>, ptr %158, align 64, !tbaa !26
  br label %4341

4341:                                             ; preds = %4339, %4007
  %4342 = phi <8 x double> [ %4016, %4007 ], [ %4340, %4339 ]
  %4343 = phi <8 x double> [ %4039, %4007 ], [ %4335, %4339 ]
  %4344 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4345 = select <8 x i1> %3607, <8 x double> %4344, <8 x double> %4343
  store <8 x double> %4345, ptr %161, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %3547, ptr %13, align 64, !tbaa !26
  %4346 = load ptr, ptr %235, align 64, !tbaa !38
  %4347 = getelementptr inbounds nuw i8, ptr %4346, i64 64
  store <8 x double> %4342, ptr %4346, align 64, !tbaa !26
  %4348 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4349 = getelementptr inbounds nuw i8, ptr %4346, i64 128
  store <8 x double> %4348, ptr %4347, align 64, !tbaa !26
  %4350 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %4351 = getelementptr inbounds nuw i8, ptr %4346, i64 192
  store <8 x double> %4350, ptr %4349, align 64, !tbaa !26
  %4352 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %4353 = getelementptr inbounds nuw i8, ptr %4346, i64 256
  store <8 x double> %4352, ptr %4351, align 64, !tbaa !26
  %4354 = load i64, ptr %166, align 8, !tbaa !20
  %4355 = icmp sgt i64 %4354, 0
  br i1 %4355, label %4360, label %4356

4356:                                             ; preds = %4360, %4341
  %4357 = phi ptr [ %4353, %4341 ], [ %4366, %4360 ]
  %4358 = load i64, ptr %237, align 8, !tbaa !134
  %4359 = icmp eq i64 %4358, 0
  br i1 %4359, label %4495, label %4370

4360:                                             ; preds = %4341, %4360
  %4361 = phi ptr [ %4366, %4360 ], [ %4353, %4341 ]
  %4362 = phi i64 [ %4367, %4360 ], [ 0, %4341 ]
  %4363 = load ptr, ptr %151, align 8, !tbaa !28
  %4364 = getelementptr inbounds nuw %struct.Piece, ptr %4363, i64 %4362, i32 35
  %4365 = load <8 x double>, ptr %4364, align 64, !tbaa !26
  %4366 = getelementptr inbounds nuw i8, ptr %4361, i64 64
  store <8 x double> %4365, ptr %4361, align 64, !tbaa !26
  %4367 = add nuw nsw i64 %4362, 1
  %4368 = load i64, ptr %166, align 8, !tbaa !20
  %4369 = icmp slt i64 %4367, %4368
  br i1 %4369, label %4360, label %4356, !llvm.loop !135

4370:                                             ; preds = %4356
  %4371 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %4372 = getelementptr inbounds nuw i8, ptr %4357, i64 64
  store <8 x double> %4371, ptr %4357, align 64, !tbaa !26
  %4373 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4374 = getelementptr inbounds nuw i8, ptr %4357, i64 128
  store <8 x double> %4373, ptr %4372, align 64, !tbaa !26
  %4375 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %4376 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4377 = fsub <8 x double> %4375, %4376
  %4378 = fcmp ogt <8 x double> %4377, zeroinitializer
  %4379 = select <8 x i1> %4378, <8 x double> %4377, <8 x double> zeroinitializer
  store <8 x double> %4379, ptr %4374, align 64, !tbaa !26
  %4380 = load i64, ptr %166, align 8, !tbaa !20
  %4381 = icmp sgt i64 %4380, 0
  br i1 %4381, label %4382, label %4495

4382:                                             ; preds = %4370
  %4383 = getelementptr inbounds nuw i8, ptr %4357, i64 192
  br label %4384

4384:                                             ; preds = %4382, %4384
  %4385 = phi ptr [ %4491, %4384 ], [ %4383, %4382 ]
  %4386 = phi i64 [ %4492, %4384 ], [ 0, %4382 ]
  %4387 = load ptr, ptr %151, align 8, !tbaa !28
  %4388 = getelementptr inbounds nuw %struct.Piece, ptr %4387, i64 %4386
  %4389 = getelementptr inbounds nuw i8, ptr %4388, i64 7568
  %4390 = load ptr, ptr %4389, align 16, !tbaa !47
  %4391 = load i64, ptr %141, align 16, !tbaa !21
  %4392 = getelementptr <8 x double>, ptr %4390, i64 %4391
  %4393 = getelementptr i8, ptr %4392, i64 -64
  %4394 = load <8 x double>, ptr %4393, align 64, !tbaa !26
  %4395 = getelementptr inbounds nuw i8, ptr %4388, i64 6848
  %4396 = load <8 x double>, ptr %4395, align 64, !tbaa !26
  %4397 = getelementptr inbounds nuw i8, ptr %4388, i64 5568
  %4398 = load <8 x double>, ptr %4397, align 64, !tbaa !26
  %4399 = fsub <8 x double> %4398, %4394
  %4400 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4396, <8 x double> %4399, <8 x double> %4394)
  %4401 = getelementptr inbounds nuw i8, ptr %4385, i64 64
  store <8 x double> %4400, ptr %4385, align 64, !tbaa !26
  %4402 = getelementptr inbounds nuw i8, ptr %4388, i64 6400
  %4403 = load <8 x double>, ptr %4402, align 64, !tbaa !26
  %4404 = getelementptr inbounds nuw i8, ptr %4385, i64 128
  store <8 x double> %4403, ptr %4401, align 64, !tbaa !26
  %4405 = load <8 x double>, ptr %4388, align 64, !tbaa !26
  %4406 = getelementptr inbounds nuw i8, ptr %4388, i64 3712
  %4407 = load <8 x double>, ptr %4406, align 64, !tbaa !26
  %4408 = fsub <8 x double> %4405, %4407
  %4409 = getelementptr inbounds nuw i8, ptr %4385, i64 192
  store <8 x double> %4408, ptr %4404, align 64, !tbaa !26
  %4410 = getelementptr inbounds nuw i8, ptr %4388, i64 4032
  %4411 = load <8 x double>, ptr %4410, align 64, !tbaa !26
  %4412 = getelementptr inbounds nuw i8, ptr %4385, i64 256
  store <8 x double> %4411, ptr %4409, align 64, !tbaa !26
  %4413 = getelementptr inbounds nuw i8, ptr %4388, i64 3968
  %4414 = load <8 x double>, ptr %4413, align 64, !tbaa !26
  %4415 = getelementptr inbounds nuw i8, ptr %4385, i64 320
  store <8 x double> %4414, ptr %4412, align 64, !tbaa !26
  %4416 = getelementptr inbounds nuw i8, ptr %4388, i64 3840
  %4417 = load <8 x double>, ptr %4416, align 64, !tbaa !26
  %4418 = getelementptr inbounds nuw i8, ptr %4385, i64 384
  store <8 x double> %4417, ptr %4415, align 64, !tbaa !26
  %4419 = getelementptr inbounds nuw i8, ptr %4388, i64 4096
  %4420 = load <8 x double>, ptr %4419, align 64, !tbaa !26
  %4421 = getelementptr inbounds nuw i8, ptr %4385, i64 448
  store <8 x double> %4420, ptr %4418, align 64, !tbaa !26
  %4422 = getelementptr inbounds nuw i8, ptr %4388, i64 7688
  %4423 = load i64, ptr %142, align 8, !tbaa !22
  %4424 = sitofp i64 %4423 to double
  %4425 = tail call double @llvm.fmuladd.f64(double %4424, double 7.500000e-01, double -5.000000e-01)
  %4426 = fcmp ogt double %4425, 0.000000e+00
  %4427 = select i1 %4426, double %4425, double 0.000000e+00
  %4428 = fptosi double %4427 to i64
  %4429 = add nsw i64 %4423, -2
  %4430 = tail call i64 @llvm.smin.i64(i64 %4429, i64 %4428)
  %4431 = sitofp i64 %4430 to double
  %4432 = fsub double %4425, %4431
  %4433 = fsub double 1.000000e+00, %4432
  %4434 = insertelement <8 x double> poison, double %4433, i64 0
  %4435 = shufflevector <8 x double> %4434, <8 x double> poison, <8 x i32> zeroinitializer
  %4436 = load ptr, ptr %4422, align 8, !tbaa !51
  %4437 = getelementptr inbounds <8 x double>, ptr %4436, i64 %4430
  %4438 = load <8 x double>, ptr %4437, align 64, !tbaa !26
  %4439 = insertelement <8 x double> poison, double %4432, i64 0
  %4440 = shufflevector <8 x double> %4439, <8 x double> poison, <8 x i32> zeroinitializer
  %4441 = getelementptr i8, ptr %4437, i64 64
  %4442 = load <8 x double>, ptr %4441, align 64, !tbaa !26
  %4443 = fmul <8 x double> %4442, %4440
  %4444 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4435, <8 x double> %4438, <8 x double> %4443)
  store <8 x double> %4444, ptr %4421, align 64, !tbaa !26
  %4445 = load i64, ptr %142, align 8, !tbaa !22
  %4446 = sitofp i64 %4445 to double
  %4447 = tail call double @llvm.fmuladd.f64(double %4446, double 5.000000e-01, double -5.000000e-01)
  %4448 = fcmp ogt double %4447, 0.000000e+00
  %4449 = select i1 %4448, double %4447, double 0.000000e+00
  %4450 = fptosi double %4449 to i64
  %4451 = add nsw i64 %4445, -2
  %4452 = tail call i64 @llvm.smin.i64(i64 %4451, i64 %4450)
  %4453 = sitofp i64 %4452 to double
  %4454 = fsub double %4447, %4453
  %4455 = fsub double 1.000000e+00, %4454
  %4456 = insertelement <8 x double> poison, double %4455, i64 0
  %4457 = shufflevector <8 x double> %4456, <8 x double> poison, <8 x i32> zeroinitializer
  %4458 = load ptr, ptr %4422, align 8, !tbaa !51
  %4459 = getelementptr inbounds <8 x double>, ptr %4458, i64 %4452
  %4460 = load <8 x double>, ptr %4459, align 64, !tbaa !26
  %4461 = insertelement <8 x double> poison, double %4454, i64 0
  %4462 = shufflevector <8 x double> %4461, <8 x double> poison, <8 x i32> zeroinitializer
  %4463 = getelementptr i8, ptr %4459, i64 64
  %4464 = load <8 x double>, ptr %4463, align 64, !tbaa !26
  %4465 = fmul <8 x double> %4464, %4462
  %4466 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4457, <8 x double> %4460, <8 x double> %4465)
  %4467 = getelementptr inbounds nuw i8, ptr %4385, i64 512
  store <8 x double> %4466, ptr %4467, align 64, !tbaa !26
  %4468 = load i64, ptr %142, align 8, !tbaa !22
  %4469 = sitofp i64 %4468 to double
  %4470 = tail call double @llvm.fmuladd.f64(double %4469, double 2.500000e-01, double -5.000000e-01)
  %4471 = fcmp ogt double %4470, 0.000000e+00
  %4472 = select i1 %4471, double %4470, double 0.000000e+00
  %4473 = fptosi double %4472 to i64
  %4474 = add nsw i64 %4468, -2
  %4475 = tail call i64 @llvm.smin.i64(i64 %4474, i64 %4473)
  %4476 = sitofp i64 %4475 to double
  %4477 = fsub double %4470, %4476
  %4478 = fsub double 1.000000e+00, %4477
  %4479 = insertelement <8 x double> poison, double %4478, i64 0
  %4480 = shufflevector <8 x double> %4479, <8 x double> poison, <8 x i32> zeroinitializer
  %4481 = load ptr, ptr %4422, align 8, !tbaa !51
  %4482 = getelementptr inbounds <8 x double>, ptr %4481, i64 %4475
  %4483 = load <8 x double>, ptr %4482, align 64, !tbaa !26
  %4484 = insertelement <8 x double> poison, double %4477, i64 0
  %4485 = shufflevector <8 x double> %4484, <8 x double> poison, <8 x i32> zeroinitializer
  %4486 = getelementptr i8, ptr %4482, i64 64
  %4487 = load <8 x double>, ptr %4486, align 64, !tbaa !26
  %4488 = fmul <8 x double> %4487, %4485
  %4489 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4480, <8 x double> %4483, <8 x double> %4488)
  %4490 = getelementptr inbounds nuw i8, ptr %4385, i64 576
  store <8 x double> %4489, ptr %4490, align 64, !tbaa !26
  %4491 = getelementptr inbounds nuw i8, ptr %4385, i64 640
  %4492 = add nuw nsw i64 %4386, 1
  %4493 = load i64, ptr %166, align 8, !tbaa !20
  %4494 = icmp slt i64 %4492, %4493
  br i1 %4494, label %4384, label %4495, !llvm.loop !136

4495:                                             ; preds = %4384, %4370, %4356
  %4496 = getelementptr inbounds nuw i8, ptr %4357, i64 192
  br label %4497

4497:                                             ; preds = %4495, %4656
  %4498 = phi i64 [ 0, %4495 ], [ %4657, %4656 ]
  %4499 = getelementptr inbounds nuw i64, ptr %13, i64 %4498
  %4500 = load i64, ptr %4499, align 8, !tbaa !30
  %4501 = icmp eq i64 %4500, 0
  br i1 %4501, label %4656, label %4502

4502:                                             ; preds = %4497
  %4503 = getelementptr inbounds nuw [8 x i64], ptr %238, i64 0, i64 %4498
  %4504 = load i64, ptr %4503, align 8, !tbaa !30
  %4505 = load i64, ptr %239, align 8, !tbaa !137
  %4506 = icmp eq i64 %4504, %4505
  br i1 %4506, label %4510, label %4507

4507:                                             ; preds = %4502
  %4508 = getelementptr inbounds nuw [8 x ptr], ptr %243, i64 0, i64 %4498
  %4509 = load ptr, ptr %4508, align 8, !tbaa !138
  br label %4525

4510:                                             ; preds = %4502
  %4511 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %4498
  %4512 = load i64, ptr %4511, align 8, !tbaa !30
  %4513 = load ptr, ptr %240, align 8, !tbaa !139
  %4514 = load i64, ptr %134, align 8, !tbaa !42
  %4515 = getelementptr inbounds i64, ptr %4513, i64 %4514
  store i64 %4512, ptr %4515, align 8, !tbaa !30
  %4516 = load ptr, ptr %241, align 8, !tbaa !140
  %4517 = load i64, ptr %134, align 8, !tbaa !42
  %4518 = add nsw i64 %4517, 1
  store i64 %4518, ptr %134, align 8, !tbaa !42
  %4519 = load i64, ptr %239, align 8, !tbaa !137
  %4520 = mul nsw i64 %4519, %4517
  %4521 = load i64, ptr %242, align 8, !tbaa !15
  %4522 = mul nsw i64 %4520, %4521
  %4523 = getelementptr inbounds double, ptr %4516, i64 %4522
  %4524 = getelementptr inbounds nuw [8 x ptr], ptr %243, i64 0, i64 %4498
  store ptr %4523, ptr %4524, align 8, !tbaa !138
  br label %4525

4525:                                             ; preds = %4507, %4510
  %4526 = phi i64 [ %4504, %4507 ], [ 0, %4510 ]
  %4527 = phi ptr [ %4509, %4507 ], [ %4523, %4510 ]
  %4528 = add nsw i64 %4526, 1
  store i64 %4528, ptr %4503, align 8, !tbaa !30
  %4529 = load i64, ptr %242, align 8, !tbaa !15
  %4530 = mul nsw i64 %4529, %4526
  %4531 = getelementptr inbounds double, ptr %4527, i64 %4530
  %4532 = load ptr, ptr %235, align 64, !tbaa !38
  %4533 = icmp ult ptr %4532, %4353
  br i1 %4533, label %4599, label %4534

4534:                                             ; preds = %4599, %4525
  %4535 = phi ptr [ %4531, %4525 ], [ %4604, %4599 ]
  %4536 = load i64, ptr %150, align 64, !tbaa !16
  %4537 = icmp sgt i64 %4536, 0
  br i1 %4537, label %4538, label %4586

4538:                                             ; preds = %4534
  %4539 = trunc nuw nsw i64 %4498 to i32
  %4540 = and i64 %4536, 3
  %4541 = icmp ult i64 %4536, 4
  br i1 %4541, label %4570, label %4542

4542:                                             ; preds = %4538
  %4543 = and i64 %4536, 9223372036854775804
  br label %4544

4544:                                             ; preds = %4544, %4542
  %4545 = phi i64 [ 0, %4542 ], [ %4567, %4544 ]
  %4546 = phi ptr [ %4535, %4542 ], [ %4564, %4544 ]
  %4547 = phi i64 [ 0, %4542 ], [ %4568, %4544 ]
  %4548 = getelementptr inbounds nuw <8 x double>, ptr %4353, i64 %4545
  %4549 = getelementptr i8, ptr %4546, i64 8
  %4550 = load <8 x double>, ptr %4548, align 64, !tbaa !26
  %4551 = extractelement <8 x double> %4550, i32 %4539
  store double %4551, ptr %4546, align 8, !tbaa !43
  %4552 = or disjoint i64 %4545, 1
  %4553 = getelementptr inbounds nuw <8 x double>, ptr %4353, i64 %4552
  %4554 = getelementptr i8, ptr %4546, i64 16
  %4555 = load <8 x double>, ptr %4553, align 64, !tbaa !26
  %4556 = extractelement <8 x double> %4555, i32 %4539
  store double %4556, ptr %4549, align 8, !tbaa !43
  %4557 = or disjoint i64 %4545, 2
  %4558 = getelementptr inbounds nuw <8 x double>, ptr %4353, i64 %4557
  %4559 = getelementptr i8, ptr %4546, i64 24
  %4560 = load <8 x double>, ptr %4558, align 64, !tbaa !26
  %4561 = extractelement <8 x double> %4560, i32 %4539
  store double %4561, ptr %4554, align 8, !tbaa !43
  %4562 = or disjoint i64 %4545, 3
  %4563 = getelementptr inbounds nuw <8 x double>, ptr %4353, i64 %4562
  %4564 = getelementptr i8, ptr %4546, i64 32
  %4565 = load <8 x double>, ptr %4563, align 64, !tbaa !26
  %4566 = extractelement <8 x double> %4565, i32 %4539
  store double %4566, ptr %4559, align 8, !tbaa !43
  %4567 = add nuw nsw i64 %4545, 4
  %4568 = add i64 %4547, 4
  %4569 = icmp eq i64 %4568, %4543
  br i1 %4569, label %4570, label %4544, !llvm.loop !141

4570:                                             ; preds = %4544, %4538
  %4571 = phi ptr [ poison, %4538 ], [ %4564, %4544 ]
  %4572 = phi i64 [ 0, %4538 ], [ %4567, %4544 ]
  %4573 = phi ptr [ %4535, %4538 ], [ %4564, %4544 ]
  %4574 = icmp eq i64 %4540, 0
  br i1 %4574, label %4586, label %4575

4575:                                             ; preds = %4570, %4575
  %4576 = phi i64 [ %4583, %4575 ], [ %4572, %4570 ]
  %4577 = phi ptr [ %4580, %4575 ], [ %4573, %4570 ]
  %4578 = phi i64 [ %4584, %4575 ], [ 0, %4570 ]
  %4579 = getelementptr inbounds nuw <8 x double>, ptr %4353, i64 %4576
  %4580 = getelementptr i8, ptr %4577, i64 8
  %4581 = load <8 x double>, ptr %4579, align 64, !tbaa !26
  %4582 = extractelement <8 x double> %4581, i32 %4539
  store double %4582, ptr %4577, align 8, !tbaa !43
  %4583 = add nuw nsw i64 %4576, 1
  %4584 = add i64 %4578, 1
  %4585 = icmp eq i64 %4584, %4540
  br i1 %4585, label %4586, label %4575, !llvm.loop !142

4586:                                             ; preds = %4570, %4575, %4534
  %4587 = phi ptr [ %4535, %4534 ], [ %4571, %4570 ], [ %4580, %4575 ]
  %4588 = load i64, ptr %237, align 8, !tbaa !134
  %4589 = icmp eq i64 %4588, 0
  br i1 %4589, label %4656, label %4590

4590:                                             ; preds = %4586
  %4591 = getelementptr inbounds nuw double, ptr %4357, i64 %4498
  %4592 = load double, ptr %4591, align 8, !tbaa !43
  %4593 = getelementptr inbounds nuw i8, ptr %4587, i64 8
  store double %4592, ptr %4587, align 8, !tbaa !43
  %4594 = getelementptr inbounds nuw i8, ptr %4591, i64 64
  %4595 = load double, ptr %4594, align 8, !tbaa !43
  %4596 = getelementptr inbounds nuw i8, ptr %4587, i64 16
  store double %4595, ptr %4593, align 8, !tbaa !43
  %4597 = getelementptr inbounds nuw i8, ptr %4591, i64 128
  %4598 = load double, ptr %4597, align 8, !tbaa !43
  store double %4598, ptr %4596, align 8, !tbaa !43
  br i1 %4537, label %4607, label %4656

4599:                                             ; preds = %4525, %4599
  %4600 = phi ptr [ %4605, %4599 ], [ %4532, %4525 ]
  %4601 = phi ptr [ %4604, %4599 ], [ %4531, %4525 ]
  %4602 = getelementptr inbounds nuw double, ptr %4600, i64 %4498
  %4603 = load double, ptr %4602, align 8, !tbaa !43
  %4604 = getelementptr inbounds nuw i8, ptr %4601, i64 8
  store double %4603, ptr %4601, align 8, !tbaa !43
  %4605 = getelementptr inbounds nuw i8, ptr %4600, i64 64
  %4606 = icmp ult ptr %4605, %4353
  br i1 %4606, label %4599, label %4534, !llvm.loop !144

4607:                                             ; preds = %4590
  %4608 = getelementptr inbounds nuw i8, ptr %4587, i64 24
  %4609 = trunc nuw nsw i64 %4498 to i32
  br label %4610

4610:                                             ; preds = %4607, %4610
  %4611 = phi i64 [ %4654, %4610 ], [ 0, %4607 ]
  %4612 = phi ptr [ %4653, %4610 ], [ %4608, %4607 ]
  %4613 = mul nuw nsw i64 %4611, 640
  %4614 = getelementptr inbounds nuw i8, ptr %4496, i64 %4613
  %4615 = load <8 x double>, ptr %4614, align 64, !tbaa !26
  %4616 = extractelement <8 x double> %4615, i32 %4609
  %4617 = getelementptr inbounds nuw i8, ptr %4612, i64 8
  store double %4616, ptr %4612, align 8, !tbaa !43
  %4618 = getelementptr inbounds nuw i8, ptr %4614, i64 64
  %4619 = load <8 x double>, ptr %4618, align 64, !tbaa !26
  %4620 = extractelement <8 x double> %4619, i32 %4609
  %4621 = getelementptr inbounds nuw i8, ptr %4612, i64 16
  store double %4620, ptr %4617, align 8, !tbaa !43
  %4622 = getelementptr inbounds nuw i8, ptr %4614, i64 128
  %4623 = load <8 x double>, ptr %4622, align 64, !tbaa !26
  %4624 = extractelement <8 x double> %4623, i32 %4609
  %4625 = getelementptr inbounds nuw i8, ptr %4612, i64 24
  store double %4624, ptr %4621, align 8, !tbaa !43
  %4626 = getelementptr inbounds nuw i8, ptr %4614, i64 192
  %4627 = load <8 x double>, ptr %4626, align 64, !tbaa !26
  %4628 = extractelement <8 x double> %4627, i32 %4609
  %4629 = getelementptr inbounds nuw i8, ptr %4612, i64 32
  store double %4628, ptr %4625, align 8, !tbaa !43
  %4630 = getelementptr inbounds nuw i8, ptr %4614, i64 256
  %4631 = load <8 x double>, ptr %4630, align 64, !tbaa !26
  %4632 = extractelement <8 x double> %4631, i32 %4609
  %4633 = getelementptr inbounds nuw i8, ptr %4612, i64 40
  store double %4632, ptr %4629, align 8, !tbaa !43
  %4634 = getelementptr inbounds nuw i8, ptr %4614, i64 320
  %4635 = load <8 x double>, ptr %4634, align 64, !tbaa !26
  %4636 = extractelement <8 x double> %4635, i32 %4609
  %4637 = getelementptr inbounds nuw i8, ptr %4612, i64 48
  store double %4636, ptr %4633, align 8, !tbaa !43
  %4638 = getelementptr inbounds nuw i8, ptr %4614, i64 384
  %4639 = load <8 x double>, ptr %4638, align 64, !tbaa !26
  %4640 = extractelement <8 x double> %4639, i32 %4609
  %4641 = getelementptr inbounds nuw i8, ptr %4612, i64 56
  store double %4640, ptr %4637, align 8, !tbaa !43
  %4642 = getelementptr inbounds nuw i8, ptr %4614, i64 448
  %4643 = load <8 x double>, ptr %4642, align 64, !tbaa !26
  %4644 = extractelement <8 x double> %4643, i32 %4609
  %4645 = getelementptr inbounds nuw i8, ptr %4612, i64 64
  store double %4644, ptr %4641, align 8, !tbaa !43
  %4646 = getelementptr inbounds nuw i8, ptr %4614, i64 512
  %4647 = load <8 x double>, ptr %4646, align 64, !tbaa !26
  %4648 = extractelement <8 x double> %4647, i32 %4609
  %4649 = getelementptr inbounds nuw i8, ptr %4612, i64 72
  store double %4648, ptr %4645, align 8, !tbaa !43
  %4650 = getelementptr inbounds nuw i8, ptr %4614, i64 576
  %4651 = load <8 x double>, ptr %4650, align 64, !tbaa !26
  %4652 = extractelement <8 x double> %4651, i32 %4609
  %4653 = getelementptr inbounds nuw i8, ptr %4612, i64 80
  store double %4652, ptr %4649, align 8, !tbaa !43
  %4654 = add nuw nsw i64 %4611, 1
  %4655 = icmp eq i64 %4654, %4536
  br i1 %4655, label %4656, label %4610, !llvm.loop !141

4656:                                             ; preds = %4610, %4590, %4586, %4497
  %4657 = add nuw nsw i64 %4498, 1
  %4658 = icmp eq i64 %4657, 8
  br i1 %4658, label %4659, label %4497, !llvm.loop !145

4659:                                             ; preds = %4656
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %4660 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4661 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4662 = fsub <8 x double> %4660, %4661
  %4663 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %4664 = fadd <8 x double> %4663, splat (double -1.000000e-09)
  %4665 = fcmp oge <8 x double> %4662, %4664
  %4666 = select <8 x i1> %4665, <8 x i64> %3547, <8 x i64> zeroinitializer
  %4667 = load i64, ptr %166, align 8, !tbaa !20
  %4668 = icmp sgt i64 %4667, 0
  br i1 %4668, label %4669, label %4701

4669:                                             ; preds = %4659
  %4670 = load ptr, ptr %151, align 8, !tbaa !28
  %4671 = and i64 %4667, 1
  %4672 = icmp eq i64 %4667, 1
  br i1 %4672, label %4691, label %4673

4673:                                             ; preds = %4669
  %4674 = and i64 %4667, 9223372036854775806
  br label %4675

4675:                                             ; preds = %4675, %4673
  %4676 = phi i64 [ 0, %4673 ], [ %4688, %4675 ]
  %4677 = phi <8 x double> [ splat (double 1.000000e+09), %4673 ], [ %4687, %4675 ]
  %4678 = phi i64 [ 0, %4673 ], [ %4689, %4675 ]
  %4679 = getelementptr inbounds nuw %struct.Piece, ptr %4670, i64 %4676, i32 35
  %4680 = load <8 x double>, ptr %4679, align 64, !tbaa !26
  %4681 = fcmp olt <8 x double> %4677, %4680
  %4682 = select <8 x i1> %4681, <8 x double> %4677, <8 x double> %4680
  %4683 = or disjoint i64 %4676, 1
  %4684 = getelementptr inbounds nuw %struct.Piece, ptr %4670, i64 %4683, i32 35
  %4685 = load <8 x double>, ptr %4684, align 64, !tbaa !26
  %4686 = fcmp olt <8 x double> %4682, %4685
  %4687 = select <8 x i1> %4686, <8 x double> %4682, <8 x double> %4685
  %4688 = add nuw nsw i64 %4676, 2
  %4689 = add i64 %4678, 2
  %4690 = icmp eq i64 %4689, %4674
  br i1 %4690, label %4691, label %4675, !llvm.loop !119

4691:                                             ; preds = %4675, %4669
  %4692 = phi <8 x double> [ poison, %4669 ], [ %4687, %4675 ]
  %4693 = phi i64 [ 0, %4669 ], [ %4688, %4675 ]
  %4694 = phi <8 x double> [ splat (double 1.000000e+09), %4669 ], [ %4687, %4675 ]
  %4695 = icmp eq i64 %4671, 0
  br i1 %4695, label %4701, label %4696

4696:                                             ; preds = %4691
  %4697 = getelementptr inbounds nuw %struct.Piece, ptr %4670, i64 %4693, i32 35
  %4698 = load <8 x double>, ptr %4697, align 64, !tbaa !26
  %4699 = fcmp olt <8 x double> %4694, %4698
  %4700 = select <8 x i1> %4699, <8 x double> %4694, <8 x double> %4698
  br label %4701

4701:                                             ; preds = %4696, %4691, %4659
  %4702 = phi <8 x double> [ splat (double 1.000000e+09), %4659 ], [ %4692, %4691 ], [ %4700, %4696 ]
  %4703 = load <8 x double>, ptr %231, align 64, !tbaa !26
  %4704 = select <8 x i1> %3607, <8 x double> %4703, <8 x double> %4702
  store <8 x double> %4704, ptr %231, align 64, !tbaa !26
  %4705 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %4706 = fcmp une <8 x double> %4705, zeroinitializer
  %4707 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %4708 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %4709 = fsub <8 x double> %4707, %4708
  %4710 = fcmp une <8 x double> %4705, splat (double 1.000000e+00)
  %4711 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %4712 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4713 = fsub <8 x double> %4711, %4712
  %4714 = select <8 x i1> %4710, <8 x double> splat (double -1.000000e+00), <8 x double> %4713
  %4715 = fcmp une <8 x double> %4705, splat (double 2.000000e+00)
  %4716 = fsub <8 x double> %4704, %4712
  %4717 = select <8 x i1> %4715, <8 x double> %4714, <8 x double> %4716
  %4718 = fcmp une <8 x double> %4705, splat (double 3.000000e+00)
  %4719 = fsub <8 x double> %4709, %4712
  %4720 = select <8 x i1> %4718, <8 x double> %4717, <8 x double> %4719
  %4721 = fcmp une <8 x double> %4705, splat (double 4.000000e+00)
  %4722 = fsub <8 x double> %4712, %4709
  %4723 = select <8 x i1> %4721, <8 x double> %4720, <8 x double> %4722
  %4724 = fcmp oge <8 x double> %4723, splat (double 0xBEB0C6F7A0B5ED8D)
  %4725 = select <8 x i1> %4724, <8 x i1> %4706, <8 x i1> zeroinitializer
  %4726 = select <8 x i1> %4725, <8 x i64> %3547, <8 x i64> zeroinitializer
  %4727 = xor <8 x i64> %4726, splat (i64 -1)
  %4728 = and <8 x i64> %4666, %4727
  %4729 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %4730 = icmp ne <8 x i64> %4728, zeroinitializer
  %4731 = select <8 x i1> %4706, <8 x i1> %4730, <8 x i1> zeroinitializer
  %4732 = select <8 x i1> %4731, <8 x double> splat (double 2.000000e+00), <8 x double> %4729
  store <8 x double> %4732, ptr %148, align 64, !tbaa !26
  %4733 = or <8 x i64> %4726, %4666
  %4734 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4735 = fadd <8 x double> %4734, splat (double 1.000000e+00)
  %4736 = icmp eq <8 x i64> %4733, zeroinitializer
  %4737 = select <8 x i1> %4736, <8 x double> %4734, <8 x double> %4735
  store <8 x double> %4737, ptr %236, align 64, !tbaa !26
  %4738 = xor <8 x i64> %4733, %3547
  %4739 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4740 = fcmp oeq <8 x double> %4739, zeroinitializer
  %4741 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4742 = fcmp oeq <8 x double> %4741, zeroinitializer
  %4743 = select <8 x i1> %4742, <8 x i1> %4740, <8 x i1> zeroinitializer
  %4744 = select <8 x i1> %4743, <8 x i64> %4738, <8 x i64> zeroinitializer
  %4745 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %4746 = fmul <8 x double> %4745, splat (double 5.000000e-01)
  %4747 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %4748 = fadd <8 x double> %4747, %4746
  %4749 = fadd <8 x double> %4748, splat (double -1.000000e-03)
  %4750 = fcmp ult <8 x double> %4711, %4749
  %4751 = fsub <8 x double> %4747, %4746
  %4752 = fadd <8 x double> %4751, splat (double 1.000000e-03)
  %4753 = fcmp ole <8 x double> %4711, %4752
  %4754 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %4755 = select <8 x i1> %4753, <8 x i64> splat (i64 -1), <8 x i64> %4754
  %4756 = select <8 x i1> %4750, <8 x i64> %4755, <8 x i64> zeroinitializer
  %4757 = xor <8 x i64> %4756, %4754
  %4758 = and <8 x i64> %4757, %4744
  %4759 = and <8 x i64> %4756, %4744
  %4760 = xor <8 x i64> %4744, splat (i64 -1)
  %4761 = and <8 x i64> %4754, %4760
  %4762 = or <8 x i64> %4759, %4761
  store <8 x i64> %4762, ptr %176, align 64, !tbaa !26
  %4763 = load <8 x i64>, ptr %169, align 64, !tbaa !26
  %4764 = or <8 x i64> %4758, %4763
  store <8 x i64> %4764, ptr %169, align 64, !tbaa !26
  %4765 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4733)
  %4766 = icmp eq i64 %4765, 0
  br i1 %4766, label %4801, label %4767

4767:                                             ; preds = %4701
  %4768 = extractelement <8 x i64> %4733, i64 0
  %4769 = icmp eq i64 %4768, 0
  br i1 %4769, label %4771, label %4770

4770:                                             ; preds = %4767
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %4771

4771:                                             ; preds = %4770, %4767
  %4772 = extractelement <8 x i64> %4733, i64 1
  %4773 = icmp eq i64 %4772, 0
  br i1 %4773, label %4775, label %4774

4774:                                             ; preds = %4771
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %4775

4775:                                             ; preds = %4774, %4771
  %4776 = extractelement <8 x i64> %4733, i64 2
  %4777 = icmp eq i64 %4776, 0
  br i1 %4777, label %4779, label %4778

4778:                                             ; preds = %4775
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %4779

4779:                                             ; preds = %4778, %4775
  %4780 = extractelement <8 x i64> %4733, i64 3
  %4781 = icmp eq i64 %4780, 0
  br i1 %4781, label %4783, label %4782

4782:                                             ; preds = %4779
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %4783

4783:                                             ; preds = %4782, %4779
  %4784 = extractelement <8 x i64> %4733, i64 4
  %4785 = icmp eq i64 %4784, 0
  br i1 %4785, label %4787, label %4786

4786:                                             ; preds = %4783
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %4787

4787:                                             ; preds = %4786, %4783
  %4788 = extractelement <8 x i64> %4733, i64 5
  %4789 = icmp eq i64 %4788, 0
  br i1 %4789, label %4791, label %4790

4790:                                             ; preds = %4787
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %4791

4791:                                             ; preds = %4790, %4787
  %4792 = extractelement <8 x i64> %4733, i64 6
  %4793 = icmp eq i64 %4792, 0
  br i1 %4793, label %4795, label %4794

4794:                                             ; preds = %4791
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %4795

4795:                                             ; preds = %4794, %4791
  %4796 = extractelement <8 x i64> %4733, i64 7
  %4797 = icmp eq i64 %4796, 0
  br i1 %4797, label %4799, label %4798

4798:                                             ; preds = %4795
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %4799

4799:                                             ; preds = %4798, %4795
  %4800 = load <8 x double>, ptr %148, align 64, !tbaa !26
  br label %4801

4801:                                             ; preds = %4799, %4701
  %4802 = phi <8 x double> [ %4800, %4799 ], [ %4732, %4701 ]
  %4803 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4804 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %4805 = fadd <8 x double> %4804, splat (double -1.000000e+00)
  %4806 = fcmp oge <8 x double> %4803, %4805
  %4807 = select <8 x i1> %4806, <8 x i64> %3547, <8 x i64> zeroinitializer
  %4808 = icmp eq <8 x i64> %4807, zeroinitializer
  %4809 = select <8 x i1> %4808, <8 x double> %4802, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %4809, ptr %148, align 64, !tbaa !26
  %4810 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4807)
  %4811 = icmp eq i64 %4810, 0
  br i1 %4811, label %546, label %4812

4812:                                             ; preds = %4801
  %4813 = extractelement <8 x i64> %4807, i64 0
  %4814 = icmp eq i64 %4813, 0
  br i1 %4814, label %4816, label %4815

4815:                                             ; preds = %4812
  store double 1.000000e+00, ptr %140, align 8, !tbaa !43
  br label %4816

4816:                                             ; preds = %4815, %4812
  %4817 = extractelement <8 x i64> %4807, i64 1
  %4818 = icmp eq i64 %4817, 0
  br i1 %4818, label %4820, label %4819

4819:                                             ; preds = %4816
  store double 1.000000e+00, ptr %274, align 8, !tbaa !43
  br label %4820

4820:                                             ; preds = %4819, %4816
  %4821 = extractelement <8 x i64> %4807, i64 2
  %4822 = icmp eq i64 %4821, 0
  br i1 %4822, label %4824, label %4823

4823:                                             ; preds = %4820
  store double 1.000000e+00, ptr %275, align 8, !tbaa !43
  br label %4824

4824:                                             ; preds = %4823, %4820
  %4825 = extractelement <8 x i64> %4807, i64 3
  %4826 = icmp eq i64 %4825, 0
  br i1 %4826, label %4828, label %4827

4827:                                             ; preds = %4824
  store double 1.000000e+00, ptr %276, align 8, !tbaa !43
  br label %4828

4828:                                             ; preds = %4827, %4824
  %4829 = extractelement <8 x i64> %4807, i64 4
  %4830 = icmp eq i64 %4829, 0
  br i1 %4830, label %4832, label %4831

4831:                                             ; preds = %4828
  store double 1.000000e+00, ptr %277, align 8, !tbaa !43
  br label %4832

4832:                                             ; preds = %4831, %4828
  %4833 = extractelement <8 x i64> %4807, i64 5
  %4834 = icmp eq i64 %4833, 0
  br i1 %4834, label %4836, label %4835

4835:                                             ; preds = %4832
  store double 1.000000e+00, ptr %278, align 8, !tbaa !43
  br label %4836

4836:                                             ; preds = %4835, %4832
  %4837 = extractelement <8 x i64> %4807, i64 6
  %4838 = icmp eq i64 %4837, 0
  br i1 %4838, label %4840, label %4839

4839:                                             ; preds = %4836
  store double 1.000000e+00, ptr %279, align 8, !tbaa !43
  br label %4840

4840:                                             ; preds = %4839, %4836
  %4841 = extractelement <8 x i64> %4807, i64 7
  %4842 = icmp eq i64 %4841, 0
  br i1 %4842, label %546, label %4843

4843:                                             ; preds = %4840
  store double 1.000000e+00, ptr %280, align 8, !tbaa !43
  br label %546

4844:                                             ; preds = %546, %551, %131
  %4845 = phi i64 [ 0, %131 ], [ 1, %551 ], [ 0, %546 ]
  ret i64 %4845
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2344
  %6 = sext i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #6
  %8 = getelementptr inbounds i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  %9 = load i64, ptr %5, align 8, !tbaa !27
  %10 = add nsw i64 %9, 1
  store i64 %10, ptr %5, align 8, !tbaa !27
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 5952
  %12 = load ptr, ptr %11, align 64, !tbaa !38
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
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  br label %35

30:                                               ; preds = %35, %3
  %31 = phi ptr [ %24, %3 ], [ %41, %35 ]
  %32 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %33 = load i64, ptr %32, align 8, !tbaa !134
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
  br i1 %44, label %35, label %30, !llvm.loop !135

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
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 2328
  br label %65

65:                                               ; preds = %60, %65
  %66 = phi ptr [ %61, %60 ], [ %172, %65 ]
  %67 = phi i64 [ 0, %60 ], [ %173, %65 ]
  %68 = load ptr, ptr %62, align 8, !tbaa !28
  %69 = getelementptr inbounds nuw %struct.Piece, ptr %68, i64 %67
  %70 = getelementptr inbounds nuw i8, ptr %69, i64 7568
  %71 = load ptr, ptr %70, align 16, !tbaa !47
  %72 = load i64, ptr %63, align 16, !tbaa !21
  %73 = getelementptr <8 x double>, ptr %71, i64 %72
  %74 = getelementptr i8, ptr %73, i64 -64
  %75 = load <8 x double>, ptr %74, align 64, !tbaa !26
  %76 = getelementptr inbounds nuw i8, ptr %69, i64 6848
  %77 = load <8 x double>, ptr %76, align 64, !tbaa !26
  %78 = getelementptr inbounds nuw i8, ptr %69, i64 5568
  %79 = load <8 x double>, ptr %78, align 64, !tbaa !26
  %80 = fsub <8 x double> %79, %75
  %81 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %77, <8 x double> %80, <8 x double> %75)
  %82 = getelementptr inbounds nuw i8, ptr %66, i64 64
  store <8 x double> %81, ptr %66, align 64, !tbaa !26
  %83 = getelementptr inbounds nuw i8, ptr %69, i64 6400
  %84 = load <8 x double>, ptr %83, align 64, !tbaa !26
  %85 = getelementptr inbounds nuw i8, ptr %66, i64 128
  store <8 x double> %84, ptr %82, align 64, !tbaa !26
  %86 = load <8 x double>, ptr %69, align 64, !tbaa !26
  %87 = getelementptr inbounds nuw i8, ptr %69, i64 3712
  %88 = load <8 x double>, ptr %87, align 64, !tbaa !26
  %89 = fsub <8 x double> %86, %88
  %90 = getelementptr inbounds nuw i8, ptr %66, i64 192
  store <8 x double> %89, ptr %85, align 64, !tbaa !26
  %91 = getelementptr inbounds nuw i8, ptr %69, i64 4032
  %92 = load <8 x double>, ptr %91, align 64, !tbaa !26
  %93 = getelementptr inbounds nuw i8, ptr %66, i64 256
  store <8 x double> %92, ptr %90, align 64, !tbaa !26
  %94 = getelementptr inbounds nuw i8, ptr %69, i64 3968
  %95 = load <8 x double>, ptr %94, align 64, !tbaa !26
  %96 = getelementptr inbounds nuw i8, ptr %66, i64 320
  store <8 x double> %95, ptr %93, align 64, !tbaa !26
  %97 = getelementptr inbounds nuw i8, ptr %69, i64 3840
  %98 = load <8 x double>, ptr %97, align 64, !tbaa !26
  %99 = getelementptr inbounds nuw i8, ptr %66, i64 384
  store <8 x double> %98, ptr %96, align 64, !tbaa !26
  %100 = getelementptr inbounds nuw i8, ptr %69, i64 4096
  %101 = load <8 x double>, ptr %100, align 64, !tbaa !26
  %102 = getelementptr inbounds nuw i8, ptr %66, i64 448
  store <8 x double> %101, ptr %99, align 64, !tbaa !26
  %103 = getelementptr inbounds nuw i8, ptr %69, i64 7688
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
  %117 = load ptr, ptr %103, align 8, !tbaa !51
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
  %139 = load ptr, ptr %103, align 8, !tbaa !51
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
  %162 = load ptr, ptr %103, align 8, !tbaa !51
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
  br i1 %175, label %65, label %176, !llvm.loop !136

176:                                              ; preds = %65, %45, %30
  %177 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %179 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %181 = load ptr, ptr %180, align 8
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %185 = getelementptr inbounds nuw i8, ptr %0, i64 5824
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
  %198 = load i64, ptr %178, align 8, !tbaa !137
  %199 = icmp eq i64 %197, %198
  br i1 %199, label %203, label %200

200:                                              ; preds = %195
  %201 = getelementptr inbounds nuw [8 x ptr], ptr %185, i64 0, i64 %191
  %202 = load ptr, ptr %201, align 8, !tbaa !138
  br label %217

203:                                              ; preds = %195
  %204 = getelementptr inbounds nuw [8 x i64], ptr %179, i64 0, i64 %191
  %205 = load i64, ptr %204, align 8, !tbaa !30
  %206 = load i64, ptr %182, align 8, !tbaa !42
  %207 = getelementptr inbounds i64, ptr %181, i64 %206
  store i64 %205, ptr %207, align 8, !tbaa !30
  %208 = load ptr, ptr %183, align 8, !tbaa !140
  %209 = load i64, ptr %182, align 8, !tbaa !42
  %210 = add nsw i64 %209, 1
  store i64 %210, ptr %182, align 8, !tbaa !42
  %211 = load i64, ptr %178, align 8, !tbaa !137
  %212 = mul nsw i64 %211, %209
  %213 = load i64, ptr %184, align 8, !tbaa !15
  %214 = mul nsw i64 %212, %213
  %215 = getelementptr inbounds double, ptr %208, i64 %214
  %216 = getelementptr inbounds nuw [8 x ptr], ptr %185, i64 0, i64 %191
  store ptr %215, ptr %216, align 8, !tbaa !138
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
  store double %241, ptr %236, align 8, !tbaa !43
  %242 = or disjoint i64 %235, 1
  %243 = getelementptr inbounds nuw <8 x double>, ptr %24, i64 %242
  %244 = getelementptr i8, ptr %236, i64 16
  %245 = load <8 x double>, ptr %243, align 64, !tbaa !26
  %246 = extractelement <8 x double> %245, i32 %229
  store double %246, ptr %239, align 8, !tbaa !43
  %247 = or disjoint i64 %235, 2
  %248 = getelementptr inbounds nuw <8 x double>, ptr %24, i64 %247
  %249 = getelementptr i8, ptr %236, i64 24
  %250 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %251 = extractelement <8 x double> %250, i32 %229
  store double %251, ptr %244, align 8, !tbaa !43
  %252 = or disjoint i64 %235, 3
  %253 = getelementptr inbounds nuw <8 x double>, ptr %24, i64 %252
  %254 = getelementptr i8, ptr %236, i64 32
  %255 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %256 = extractelement <8 x double> %255, i32 %229
  store double %256, ptr %249, align 8, !tbaa !43
  %257 = add nuw nsw i64 %235, 4
  %258 = add i64 %237, 4
  %259 = icmp eq i64 %258, %233
  br i1 %259, label %260, label %234, !llvm.loop !141

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
  store double %272, ptr %267, align 8, !tbaa !43
  %273 = add nuw nsw i64 %266, 1
  %274 = add i64 %268, 1
  %275 = icmp eq i64 %274, %230
  br i1 %275, label %276, label %265, !llvm.loop !146

276:                                              ; preds = %260, %265, %224
  %277 = phi ptr [ %225, %224 ], [ %261, %260 ], [ %270, %265 ]
  %278 = load i64, ptr %32, align 8, !tbaa !134
  %279 = icmp eq i64 %278, 0
  br i1 %279, label %346, label %280

280:                                              ; preds = %276
  %281 = getelementptr inbounds nuw double, ptr %31, i64 %191
  %282 = load double, ptr %281, align 8, !tbaa !43
  %283 = getelementptr inbounds nuw i8, ptr %277, i64 8
  store double %282, ptr %277, align 8, !tbaa !43
  %284 = getelementptr inbounds nuw i8, ptr %281, i64 64
  %285 = load double, ptr %284, align 8, !tbaa !43
  %286 = getelementptr inbounds nuw i8, ptr %277, i64 16
  store double %285, ptr %283, align 8, !tbaa !43
  %287 = getelementptr inbounds nuw i8, ptr %281, i64 128
  %288 = load double, ptr %287, align 8, !tbaa !43
  store double %288, ptr %286, align 8, !tbaa !43
  br i1 %227, label %297, label %346

289:                                              ; preds = %217, %289
  %290 = phi ptr [ %295, %289 ], [ %186, %217 ]
  %291 = phi ptr [ %294, %289 ], [ %223, %217 ]
  %292 = getelementptr inbounds nuw double, ptr %290, i64 %191
  %293 = load double, ptr %292, align 8, !tbaa !43
  %294 = getelementptr inbounds nuw i8, ptr %291, i64 8
  store double %293, ptr %291, align 8, !tbaa !43
  %295 = getelementptr inbounds nuw i8, ptr %290, i64 64
  %296 = icmp ult ptr %295, %24
  br i1 %296, label %289, label %224, !llvm.loop !144

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
  store double %306, ptr %302, align 8, !tbaa !43
  %308 = getelementptr inbounds nuw i8, ptr %304, i64 64
  %309 = load <8 x double>, ptr %308, align 64, !tbaa !26
  %310 = extractelement <8 x double> %309, i32 %299
  %311 = getelementptr inbounds nuw i8, ptr %302, i64 16
  store double %310, ptr %307, align 8, !tbaa !43
  %312 = getelementptr inbounds nuw i8, ptr %304, i64 128
  %313 = load <8 x double>, ptr %312, align 64, !tbaa !26
  %314 = extractelement <8 x double> %313, i32 %299
  %315 = getelementptr inbounds nuw i8, ptr %302, i64 24
  store double %314, ptr %311, align 8, !tbaa !43
  %316 = getelementptr inbounds nuw i8, ptr %304, i64 192
  %317 = load <8 x double>, ptr %316, align 64, !tbaa !26
  %318 = extractelement <8 x double> %317, i32 %299
  %319 = getelementptr inbounds nuw i8, ptr %302, i64 32
  store double %318, ptr %315, align 8, !tbaa !43
  %320 = getelementptr inbounds nuw i8, ptr %304, i64 256
  %321 = load <8 x double>, ptr %320, align 64, !tbaa !26
  %322 = extractelement <8 x double> %321, i32 %299
  %323 = getelementptr inbounds nuw i8, ptr %302, i64 40
  store double %322, ptr %319, align 8, !tbaa !43
  %324 = getelementptr inbounds nuw i8, ptr %304, i64 320
  %325 = load <8 x double>, ptr %324, align 64, !tbaa !26
  %326 = extractelement <8 x double> %325, i32 %299
  %327 = getelementptr inbounds nuw i8, ptr %302, i64 48
  store double %326, ptr %323, align 8, !tbaa !43
  %328 = getelementptr inbounds nuw i8, ptr %304, i64 384
  %329 = load <8 x double>, ptr %328, align 64, !tbaa !26
  %330 = extractelement <8 x double> %329, i32 %299
  %331 = getelementptr inbounds nuw i8, ptr %302, i64 56
  store double %330, ptr %327, align 8, !tbaa !43
  %332 = getelementptr inbounds nuw i8, ptr %304, i64 448
  %333 = load <8 x double>, ptr %332, align 64, !tbaa !26
  %334 = extractelement <8 x double> %333, i32 %299
  %335 = getelementptr inbounds nuw i8, ptr %302, i64 64
  store double %334, ptr %331, align 8, !tbaa !43
  %336 = getelementptr inbounds nuw i8, ptr %304, i64 512
  %337 = load <8 x double>, ptr %336, align 64, !tbaa !26
  %338 = extractelement <8 x double> %337, i32 %299
  %339 = getelementptr inbounds nuw i8, ptr %302, i64 72
  store double %338, ptr %335, align 8, !tbaa !43
  %340 = getelementptr inbounds nuw i8, ptr %304, i64 576
  %341 = load <8 x double>, ptr %340, align 64, !tbaa !26
  %342 = extractelement <8 x double> %341, i32 %299
  %343 = getelementptr inbounds nuw i8, ptr %302, i64 80
  store double %342, ptr %339, align 8, !tbaa !43
  %344 = add nuw nsw i64 %301, 1
  %345 = icmp eq i64 %344, %226
  br i1 %345, label %346, label %300, !llvm.loop !141

346:                                              ; preds = %300, %280, %276, %190
  %347 = add nuw nsw i64 %191, 1
  %348 = icmp eq i64 %347, 8
  br i1 %348, label %349, label %190, !llvm.loop !145

349:                                              ; preds = %346
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !137
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
  store double 0.000000e+00, ptr %20, align 8, !tbaa !43
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !147
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
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2328
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = load ptr, ptr %36, align 8, !tbaa !148
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !149
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !150
  br label %154

42:                                               ; preds = %42, %4
  %43 = phi i64 [ 0, %4 ], [ %59, %42 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !43
  %46 = getelementptr <8 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !43
  %47 = or disjoint i64 %43, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !43
  %50 = getelementptr <8 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !43
  %51 = or disjoint i64 %43, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !43
  %54 = getelementptr <8 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !43
  %55 = or disjoint i64 %43, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !43
  %58 = getelementptr <8 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !43
  %59 = add nuw nsw i64 %43, 4
  %60 = icmp eq i64 %59, 36
  br i1 %60, label %26, label %42, !llvm.loop !151

61:                                               ; preds = %533, %26
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
  store double 0.000000e+00, ptr %72, align 8, !tbaa !43
  %73 = getelementptr i8, ptr %71, i64 320
  store double 0.000000e+00, ptr %73, align 8, !tbaa !43
  %74 = load double, ptr %66, align 8, !tbaa !43
  store double %74, ptr %71, align 8, !tbaa !43
  %75 = load double, ptr %68, align 8, !tbaa !43
  %76 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %77 = getelementptr inbounds double, ptr %76, i64 %6
  store double %75, ptr %77, align 8, !tbaa !43
  %78 = load double, ptr %70, align 8, !tbaa !43
  %79 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %80 = getelementptr inbounds double, ptr %79, i64 %6
  store double %78, ptr %80, align 8, !tbaa !43
  %81 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %82 = getelementptr inbounds double, ptr %81, i64 %6
  store double %78, ptr %82, align 8, !tbaa !43
  %83 = getelementptr double, ptr %63, i64 %6
  %84 = getelementptr i8, ptr %83, i64 256
  store double 0.000000e+00, ptr %84, align 8, !tbaa !43
  %85 = getelementptr i8, ptr %83, i64 320
  store double 0.000000e+00, ptr %85, align 8, !tbaa !43
  store double %74, ptr %83, align 8, !tbaa !43
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %87 = getelementptr inbounds double, ptr %86, i64 %6
  store double %75, ptr %87, align 8, !tbaa !43
  %88 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %89 = getelementptr inbounds double, ptr %88, i64 %6
  store double %78, ptr %89, align 8, !tbaa !43
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %91 = getelementptr inbounds double, ptr %90, i64 %6
  store double %78, ptr %91, align 8, !tbaa !43
  %92 = getelementptr double, ptr %64, i64 %6
  %93 = getelementptr i8, ptr %92, i64 256
  store double 0.000000e+00, ptr %93, align 8, !tbaa !43
  %94 = getelementptr i8, ptr %92, i64 320
  store double 0.000000e+00, ptr %94, align 8, !tbaa !43
  store double %74, ptr %92, align 8, !tbaa !43
  %95 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %96 = getelementptr inbounds double, ptr %95, i64 %6
  store double %75, ptr %96, align 8, !tbaa !43
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %98 = getelementptr inbounds double, ptr %97, i64 %6
  store double %78, ptr %98, align 8, !tbaa !43
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %100 = getelementptr inbounds double, ptr %99, i64 %6
  store double %78, ptr %100, align 8, !tbaa !43
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %102 = getelementptr inbounds double, ptr %101, i64 %6
  %103 = load double, ptr %102, align 8, !tbaa !43
  %104 = getelementptr inbounds nuw i8, ptr %0, i64 3904
  %105 = getelementptr inbounds double, ptr %104, i64 %6
  store double %103, ptr %105, align 8, !tbaa !43
  %106 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %107 = getelementptr inbounds double, ptr %106, i64 %6
  store double %103, ptr %107, align 8, !tbaa !43
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %109 = getelementptr inbounds double, ptr %108, i64 %6
  store double 1.000000e+09, ptr %109, align 8, !tbaa !43
  %110 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %111 = getelementptr inbounds double, ptr %110, i64 %6
  store double 0.000000e+00, ptr %111, align 8, !tbaa !43
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %113 = getelementptr inbounds double, ptr %112, i64 %6
  %114 = load double, ptr %113, align 8, !tbaa !43
  %115 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %116 = getelementptr inbounds double, ptr %115, i64 %6
  store double %114, ptr %116, align 8, !tbaa !43
  %117 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %118 = getelementptr inbounds double, ptr %117, i64 %6
  store double %114, ptr %118, align 8, !tbaa !43
  %119 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %120 = getelementptr inbounds double, ptr %119, i64 %6
  %121 = load double, ptr %120, align 8, !tbaa !43
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %123 = getelementptr inbounds double, ptr %122, i64 %6
  store double %121, ptr %123, align 8, !tbaa !43
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
  store double 0.000000e+00, ptr %135, align 8, !tbaa !43
  %136 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !43
  %137 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !43
  %138 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !43
  %139 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !43
  %140 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !43
  %141 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !43
  %142 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !43
  %143 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !43
  %144 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !43
  %145 = getelementptr inbounds double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !43
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

154:                                              ; preds = %30, %533
  %155 = phi i64 [ 0, %30 ], [ %534, %533 ]
  %156 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %155
  %157 = load i64, ptr %33, align 16, !tbaa !21
  %158 = load i64, ptr %34, align 8, !tbaa !22
  %159 = load i64, ptr %35, align 64, !tbaa !16
  %160 = mul nsw i64 %159, %3
  %161 = add nsw i64 %160, %155
  %162 = getelementptr inbounds nuw i8, ptr %156, i64 7552
  %163 = load i64, ptr %162, align 64, !tbaa !31
  %164 = mul i64 %161, 368
  %165 = getelementptr i8, ptr %37, i64 %164
  %166 = getelementptr double, ptr %156, i64 %6
  br label %196

167:                                              ; preds = %196
  %168 = icmp eq i64 %163, 0
  %169 = getelementptr inbounds i64, ptr %41, i64 %161
  %170 = load i64, ptr %169, align 8, !tbaa !30
  %171 = mul nsw i64 %157, 3
  %172 = add nsw i64 %157, 1
  %173 = select i1 %168, i64 0, i64 2
  %174 = shl i64 %172, %173
  %175 = add nsw i64 %174, %171
  %176 = mul nsw i64 %170, %175
  %177 = getelementptr inbounds double, ptr %39, i64 %176
  %178 = icmp sgt i64 %157, 0
  br i1 %178, label %179, label %220

179:                                              ; preds = %167
  %180 = getelementptr inbounds nuw i8, ptr %156, i64 7648
  %181 = load ptr, ptr %180, align 32, !tbaa !72
  %182 = getelementptr double, ptr %181, i64 %6
  %183 = getelementptr double, ptr %177, i64 %157
  %184 = getelementptr inbounds nuw i8, ptr %156, i64 7656
  %185 = load ptr, ptr %184, align 8, !tbaa !49
  %186 = getelementptr double, ptr %185, i64 %6
  %187 = shl i64 %157, 4
  %188 = getelementptr i8, ptr %177, i64 %187
  %189 = getelementptr inbounds nuw i8, ptr %156, i64 7664
  %190 = load ptr, ptr %189, align 16, !tbaa !121
  %191 = getelementptr double, ptr %190, i64 %6
  %192 = and i64 %157, 1
  %193 = icmp eq i64 %157, 1
  br i1 %193, label %207, label %194

194:                                              ; preds = %179
  %195 = and i64 %157, 9223372036854775806
  br label %235

196:                                              ; preds = %196, %154
  %197 = phi i64 [ 0, %154 ], [ %205, %196 ]
  %198 = getelementptr double, ptr %165, i64 %197
  %199 = load double, ptr %198, align 8, !tbaa !43
  %200 = getelementptr <8 x double>, ptr %166, i64 %197
  store double %199, ptr %200, align 8, !tbaa !43
  %201 = or disjoint i64 %197, 1
  %202 = getelementptr double, ptr %165, i64 %201
  %203 = load double, ptr %202, align 8, !tbaa !43
  %204 = getelementptr <8 x double>, ptr %166, i64 %201
  store double %203, ptr %204, align 8, !tbaa !43
  %205 = add nuw nsw i64 %197, 2
  %206 = icmp eq i64 %205, 46
  br i1 %206, label %167, label %196, !llvm.loop !152

207:                                              ; preds = %235, %179
  %208 = phi i64 [ 0, %179 ], [ %257, %235 ]
  %209 = icmp eq i64 %192, 0
  br i1 %209, label %220, label %210

210:                                              ; preds = %207
  %211 = getelementptr inbounds nuw double, ptr %177, i64 %208
  %212 = load double, ptr %211, align 8, !tbaa !43
  %213 = getelementptr <8 x double>, ptr %182, i64 %208
  store double %212, ptr %213, align 8, !tbaa !43
  %214 = getelementptr double, ptr %183, i64 %208
  %215 = load double, ptr %214, align 8, !tbaa !43
  %216 = getelementptr <8 x double>, ptr %186, i64 %208
  store double %215, ptr %216, align 8, !tbaa !43
  %217 = getelementptr double, ptr %188, i64 %208
  %218 = load double, ptr %217, align 8, !tbaa !43
  %219 = getelementptr <8 x double>, ptr %191, i64 %208
  store double %218, ptr %219, align 8, !tbaa !43
  br label %220

220:                                              ; preds = %210, %207, %167
  %221 = getelementptr inbounds nuw i8, ptr %156, i64 960
  %222 = getelementptr inbounds double, ptr %221, i64 %6
  %223 = load double, ptr %222, align 8, !tbaa !43
  %224 = load double, ptr %166, align 8, !tbaa !43
  %225 = icmp sgt i64 %174, 0
  br i1 %225, label %226, label %272

226:                                              ; preds = %220
  %227 = getelementptr double, ptr %177, i64 %171
  %228 = getelementptr inbounds nuw i8, ptr %156, i64 7672
  %229 = load ptr, ptr %228, align 8, !tbaa !35
  %230 = getelementptr double, ptr %229, i64 %6
  %231 = and i64 %174, 3
  %232 = icmp ult i64 %174, 4
  br i1 %232, label %260, label %233

233:                                              ; preds = %226
  %234 = and i64 %174, 9223372036854775804
  br label %281

235:                                              ; preds = %235, %194
  %236 = phi i64 [ 0, %194 ], [ %257, %235 ]
  %237 = phi i64 [ 0, %194 ], [ %258, %235 ]
  %238 = getelementptr inbounds nuw double, ptr %177, i64 %236
  %239 = load double, ptr %238, align 8, !tbaa !43
  %240 = getelementptr <8 x double>, ptr %182, i64 %236
  store double %239, ptr %240, align 8, !tbaa !43
  %241 = getelementptr double, ptr %183, i64 %236
  %242 = load double, ptr %241, align 8, !tbaa !43
  %243 = getelementptr <8 x double>, ptr %186, i64 %236
  store double %242, ptr %243, align 8, !tbaa !43
  %244 = getelementptr double, ptr %188, i64 %236
  %245 = load double, ptr %244, align 8, !tbaa !43
  %246 = getelementptr <8 x double>, ptr %191, i64 %236
  store double %245, ptr %246, align 8, !tbaa !43
  %247 = or disjoint i64 %236, 1
  %248 = getelementptr inbounds nuw double, ptr %177, i64 %247
  %249 = load double, ptr %248, align 8, !tbaa !43
  %250 = getelementptr <8 x double>, ptr %182, i64 %247
  store double %249, ptr %250, align 8, !tbaa !43
  %251 = getelementptr double, ptr %183, i64 %247
  %252 = load double, ptr %251, align 8, !tbaa !43
  %253 = getelementptr <8 x double>, ptr %186, i64 %247
  store double %252, ptr %253, align 8, !tbaa !43
  %254 = getelementptr double, ptr %188, i64 %247
  %255 = load double, ptr %254, align 8, !tbaa !43
  %256 = getelementptr <8 x double>, ptr %191, i64 %247
  store double %255, ptr %256, align 8, !tbaa !43
  %257 = add nuw nsw i64 %236, 2
  %258 = add i64 %237, 2
  %259 = icmp eq i64 %258, %195
  br i1 %259, label %207, label %235, !llvm.loop !153

260:                                              ; preds = %281, %226
  %261 = phi i64 [ 0, %226 ], [ %299, %281 ]
  %262 = icmp eq i64 %231, 0
  br i1 %262, label %272, label %263

263:                                              ; preds = %260, %263
  %264 = phi i64 [ %269, %263 ], [ %261, %260 ]
  %265 = phi i64 [ %270, %263 ], [ 0, %260 ]
  %266 = getelementptr double, ptr %227, i64 %264
  %267 = load double, ptr %266, align 8, !tbaa !43
  %268 = getelementptr <8 x double>, ptr %230, i64 %264
  store double %267, ptr %268, align 8, !tbaa !43
  %269 = add nuw nsw i64 %264, 1
  %270 = add i64 %265, 1
  %271 = icmp eq i64 %270, %231
  br i1 %271, label %272, label %263, !llvm.loop !154

272:                                              ; preds = %260, %263, %220
  %273 = icmp ne i64 %163, 0
  %274 = icmp sgt i64 %157, -1
  %275 = select i1 %273, i1 %274, i1 false
  br i1 %275, label %276, label %302

276:                                              ; preds = %272
  %277 = fdiv double 1.000000e+00, %224
  %278 = getelementptr inbounds nuw i8, ptr %156, i64 7672
  %279 = load ptr, ptr %278, align 8, !tbaa !35
  %280 = getelementptr double, ptr %279, i64 %6
  br label %421

281:                                              ; preds = %281, %233
  %282 = phi i64 [ 0, %233 ], [ %299, %281 ]
  %283 = phi i64 [ 0, %233 ], [ %300, %281 ]
  %284 = getelementptr double, ptr %227, i64 %282
  %285 = load double, ptr %284, align 8, !tbaa !43
  %286 = getelementptr <8 x double>, ptr %230, i64 %282
  store double %285, ptr %286, align 8, !tbaa !43
  %287 = or disjoint i64 %282, 1
  %288 = getelementptr double, ptr %227, i64 %287
  %289 = load double, ptr %288, align 8, !tbaa !43
  %290 = getelementptr <8 x double>, ptr %230, i64 %287
  store double %289, ptr %290, align 8, !tbaa !43
  %291 = or disjoint i64 %282, 2
  %292 = getelementptr double, ptr %227, i64 %291
  %293 = load double, ptr %292, align 8, !tbaa !43
  %294 = getelementptr <8 x double>, ptr %230, i64 %291
  store double %293, ptr %294, align 8, !tbaa !43
  %295 = or disjoint i64 %282, 3
  %296 = getelementptr double, ptr %227, i64 %295
  %297 = load double, ptr %296, align 8, !tbaa !43
  %298 = getelementptr <8 x double>, ptr %230, i64 %295
  store double %297, ptr %298, align 8, !tbaa !43
  %299 = add nuw nsw i64 %282, 4
  %300 = add i64 %283, 4
  %301 = icmp eq i64 %300, %234
  br i1 %301, label %260, label %281, !llvm.loop !155

302:                                              ; preds = %421, %272
  %303 = getelementptr inbounds nuw i8, ptr %156, i64 2560
  %304 = getelementptr inbounds double, ptr %303, i64 %6
  %305 = load double, ptr %304, align 8, !tbaa !43
  %306 = getelementptr inbounds nuw i8, ptr %156, i64 2624
  %307 = getelementptr inbounds double, ptr %306, i64 %6
  %308 = load double, ptr %307, align 8, !tbaa !43
  %309 = getelementptr inbounds nuw i8, ptr %156, i64 2688
  %310 = getelementptr inbounds double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !43
  %312 = getelementptr inbounds nuw i8, ptr %156, i64 2752
  %313 = getelementptr inbounds double, ptr %312, i64 %6
  %314 = load double, ptr %313, align 8, !tbaa !43
  %315 = tail call double @llvm.fmuladd.f64(double %224, double %314, double %311)
  %316 = tail call double @llvm.fmuladd.f64(double %224, double %315, double %308)
  %317 = tail call double @llvm.fmuladd.f64(double %224, double %316, double %305)
  %318 = getelementptr inbounds nuw i8, ptr %156, i64 832
  %319 = getelementptr inbounds double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !43
  %321 = getelementptr inbounds nuw i8, ptr %156, i64 1408
  %322 = getelementptr inbounds double, ptr %321, i64 %6
  %323 = load double, ptr %322, align 8, !tbaa !43
  %324 = getelementptr inbounds nuw i8, ptr %156, i64 1536
  %325 = getelementptr inbounds double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !43
  %327 = fsub double %323, %326
  %328 = fmul double %320, %327
  %329 = getelementptr inbounds nuw i8, ptr %156, i64 2944
  %330 = getelementptr inbounds nuw i8, ptr %156, i64 3712
  %331 = getelementptr inbounds nuw i8, ptr %156, i64 4480
  %332 = getelementptr inbounds nuw i8, ptr %156, i64 896
  %333 = getelementptr inbounds double, ptr %332, i64 %6
  %334 = getelementptr inbounds nuw i8, ptr %156, i64 1024
  %335 = getelementptr inbounds double, ptr %334, i64 %6
  %336 = getelementptr double, ptr %329, i64 %6
  %337 = getelementptr i8, ptr %336, i64 320
  store double 0.000000e+00, ptr %337, align 8, !tbaa !43
  %338 = getelementptr i8, ptr %336, i64 384
  store double 0.000000e+00, ptr %338, align 8, !tbaa !43
  %339 = getelementptr i8, ptr %336, i64 448
  store double 0.000000e+00, ptr %339, align 8, !tbaa !43
  %340 = getelementptr i8, ptr %336, i64 512
  store double 0.000000e+00, ptr %340, align 8, !tbaa !43
  %341 = getelementptr i8, ptr %336, i64 640
  store double 0.000000e+00, ptr %341, align 8, !tbaa !43
  store double %224, ptr %336, align 8, !tbaa !43
  %342 = getelementptr inbounds nuw i8, ptr %156, i64 3008
  %343 = getelementptr inbounds double, ptr %342, i64 %6
  store double %323, ptr %343, align 8, !tbaa !43
  %344 = load double, ptr %333, align 8, !tbaa !43
  %345 = getelementptr inbounds nuw i8, ptr %156, i64 3072
  %346 = getelementptr inbounds double, ptr %345, i64 %6
  store double %344, ptr %346, align 8, !tbaa !43
  %347 = getelementptr inbounds nuw i8, ptr %156, i64 3136
  %348 = getelementptr inbounds double, ptr %347, i64 %6
  store double %328, ptr %348, align 8, !tbaa !43
  %349 = getelementptr inbounds nuw i8, ptr %156, i64 3520
  %350 = getelementptr inbounds double, ptr %349, i64 %6
  store double %223, ptr %350, align 8, !tbaa !43
  %351 = load double, ptr %335, align 8, !tbaa !43
  %352 = getelementptr inbounds nuw i8, ptr %156, i64 3200
  %353 = getelementptr inbounds double, ptr %352, i64 %6
  store double %351, ptr %353, align 8, !tbaa !43
  %354 = getelementptr inbounds nuw i8, ptr %156, i64 3648
  %355 = getelementptr inbounds double, ptr %354, i64 %6
  store double %317, ptr %355, align 8, !tbaa !43
  %356 = getelementptr double, ptr %330, i64 %6
  %357 = getelementptr i8, ptr %356, i64 320
  store double 0.000000e+00, ptr %357, align 8, !tbaa !43
  %358 = getelementptr i8, ptr %356, i64 384
  store double 0.000000e+00, ptr %358, align 8, !tbaa !43
  %359 = getelementptr i8, ptr %356, i64 448
  store double 0.000000e+00, ptr %359, align 8, !tbaa !43
  %360 = getelementptr i8, ptr %356, i64 512
  store double 0.000000e+00, ptr %360, align 8, !tbaa !43
  %361 = getelementptr i8, ptr %356, i64 640
  store double 0.000000e+00, ptr %361, align 8, !tbaa !43
  store double %224, ptr %356, align 8, !tbaa !43
  %362 = getelementptr inbounds nuw i8, ptr %156, i64 3776
  %363 = getelementptr inbounds double, ptr %362, i64 %6
  store double %323, ptr %363, align 8, !tbaa !43
  %364 = getelementptr inbounds nuw i8, ptr %156, i64 3840
  %365 = getelementptr inbounds double, ptr %364, i64 %6
  store double %344, ptr %365, align 8, !tbaa !43
  %366 = getelementptr inbounds nuw i8, ptr %156, i64 3904
  %367 = getelementptr inbounds double, ptr %366, i64 %6
  store double %328, ptr %367, align 8, !tbaa !43
  %368 = getelementptr inbounds nuw i8, ptr %156, i64 4288
  %369 = getelementptr inbounds double, ptr %368, i64 %6
  store double %223, ptr %369, align 8, !tbaa !43
  %370 = getelementptr inbounds nuw i8, ptr %156, i64 3968
  %371 = getelementptr inbounds double, ptr %370, i64 %6
  store double %351, ptr %371, align 8, !tbaa !43
  %372 = getelementptr inbounds nuw i8, ptr %156, i64 4416
  %373 = getelementptr inbounds double, ptr %372, i64 %6
  store double %317, ptr %373, align 8, !tbaa !43
  %374 = getelementptr double, ptr %331, i64 %6
  %375 = getelementptr i8, ptr %374, i64 320
  store double 0.000000e+00, ptr %375, align 8, !tbaa !43
  %376 = getelementptr i8, ptr %374, i64 384
  store double 0.000000e+00, ptr %376, align 8, !tbaa !43
  %377 = getelementptr i8, ptr %374, i64 448
  store double 0.000000e+00, ptr %377, align 8, !tbaa !43
  %378 = getelementptr i8, ptr %374, i64 512
  store double 0.000000e+00, ptr %378, align 8, !tbaa !43
  %379 = getelementptr i8, ptr %374, i64 640
  store double 0.000000e+00, ptr %379, align 8, !tbaa !43
  store double %224, ptr %374, align 8, !tbaa !43
  %380 = load double, ptr %322, align 8, !tbaa !43
  %381 = getelementptr inbounds nuw i8, ptr %156, i64 4544
  %382 = getelementptr inbounds double, ptr %381, i64 %6
  store double %380, ptr %382, align 8, !tbaa !43
  %383 = getelementptr inbounds nuw i8, ptr %156, i64 4608
  %384 = getelementptr inbounds double, ptr %383, i64 %6
  store double %344, ptr %384, align 8, !tbaa !43
  %385 = getelementptr inbounds nuw i8, ptr %156, i64 4672
  %386 = getelementptr inbounds double, ptr %385, i64 %6
  store double %328, ptr %386, align 8, !tbaa !43
  %387 = getelementptr inbounds nuw i8, ptr %156, i64 5056
  %388 = getelementptr inbounds double, ptr %387, i64 %6
  store double %223, ptr %388, align 8, !tbaa !43
  %389 = getelementptr inbounds nuw i8, ptr %156, i64 4736
  %390 = getelementptr inbounds double, ptr %389, i64 %6
  store double %351, ptr %390, align 8, !tbaa !43
  %391 = getelementptr inbounds nuw i8, ptr %156, i64 5184
  %392 = getelementptr inbounds double, ptr %391, i64 %6
  store double %317, ptr %392, align 8, !tbaa !43
  %393 = load double, ptr %333, align 8, !tbaa !43
  %394 = fadd double %328, %393
  %395 = getelementptr inbounds nuw i8, ptr %156, i64 1600
  %396 = getelementptr inbounds double, ptr %395, i64 %6
  store double %394, ptr %396, align 8, !tbaa !43
  %397 = getelementptr inbounds nuw i8, ptr %156, i64 5568
  %398 = getelementptr inbounds nuw i8, ptr %156, i64 6400
  %399 = getelementptr inbounds nuw i8, ptr %156, i64 6464
  %400 = getelementptr inbounds nuw i8, ptr %156, i64 7232
  %401 = getelementptr inbounds double, ptr %397, i64 %6
  store double %223, ptr %401, align 8, !tbaa !43
  %402 = getelementptr inbounds double, ptr %398, i64 %6
  store double %223, ptr %402, align 8, !tbaa !43
  %403 = getelementptr inbounds double, ptr %399, i64 %6
  store double %223, ptr %403, align 8, !tbaa !43
  %404 = getelementptr inbounds double, ptr %400, i64 %6
  store double %223, ptr %404, align 8, !tbaa !43
  %405 = getelementptr inbounds nuw i8, ptr %156, i64 5632
  %406 = getelementptr inbounds nuw i8, ptr %156, i64 5696
  %407 = getelementptr inbounds nuw i8, ptr %156, i64 7296
  %408 = getelementptr inbounds nuw i8, ptr %156, i64 7168
  %409 = getelementptr inbounds nuw i8, ptr %156, i64 6848
  %410 = getelementptr inbounds double, ptr %405, i64 %6
  store double 0.000000e+00, ptr %410, align 8, !tbaa !43
  %411 = getelementptr inbounds double, ptr %406, i64 %6
  store double 0.000000e+00, ptr %411, align 8, !tbaa !43
  %412 = getelementptr inbounds double, ptr %407, i64 %6
  store double 0.000000e+00, ptr %412, align 8, !tbaa !43
  %413 = getelementptr inbounds double, ptr %408, i64 %6
  store double 0.000000e+00, ptr %413, align 8, !tbaa !43
  %414 = getelementptr inbounds double, ptr %409, i64 %6
  store double 0.000000e+00, ptr %414, align 8, !tbaa !43
  %415 = getelementptr inbounds nuw i8, ptr %156, i64 7360
  %416 = getelementptr inbounds i64, ptr %415, i64 %6
  store i64 0, ptr %416, align 8, !tbaa !30
  %417 = getelementptr inbounds nuw i8, ptr %156, i64 7424
  %418 = getelementptr inbounds i64, ptr %417, i64 %6
  store i64 -1, ptr %418, align 8, !tbaa !30
  %419 = getelementptr inbounds nuw i8, ptr %156, i64 7488
  %420 = getelementptr inbounds i64, ptr %419, i64 %6
  store i64 0, ptr %420, align 8, !tbaa !30
  br i1 %178, label %443, label %459

421:                                              ; preds = %276, %421
  %422 = phi i64 [ 0, %276 ], [ %441, %421 ]
  %423 = icmp slt i64 %422, %163
  %424 = select i1 %423, double %277, double 1.000000e+00
  %425 = shl i64 %422, 8
  %426 = getelementptr i8, ptr %280, i64 %425
  %427 = load double, ptr %426, align 8, !tbaa !43
  %428 = fmul double %424, %427
  store double %428, ptr %426, align 8, !tbaa !43
  %429 = fdiv double %424, %224
  %430 = getelementptr i8, ptr %426, i64 64
  %431 = load double, ptr %430, align 8, !tbaa !43
  %432 = fmul double %429, %431
  store double %432, ptr %430, align 8, !tbaa !43
  %433 = fdiv double %429, %224
  %434 = getelementptr i8, ptr %426, i64 128
  %435 = load double, ptr %434, align 8, !tbaa !43
  %436 = fmul double %433, %435
  store double %436, ptr %434, align 8, !tbaa !43
  %437 = fdiv double %433, %224
  %438 = getelementptr i8, ptr %426, i64 192
  %439 = load double, ptr %438, align 8, !tbaa !43
  %440 = fmul double %437, %439
  store double %440, ptr %438, align 8, !tbaa !43
  %441 = add nuw nsw i64 %422, 1
  %442 = icmp slt i64 %422, %157
  br i1 %442, label %421, label %302, !llvm.loop !156

443:                                              ; preds = %302
  %444 = getelementptr inbounds nuw i8, ptr %156, i64 7576
  %445 = load ptr, ptr %444, align 8, !tbaa !57
  %446 = getelementptr double, ptr %445, i64 %6
  %447 = getelementptr inbounds nuw i8, ptr %156, i64 7568
  %448 = load ptr, ptr %447, align 16, !tbaa !47
  %449 = getelementptr double, ptr %448, i64 %6
  %450 = getelementptr inbounds nuw i8, ptr %156, i64 7560
  %451 = load ptr, ptr %450, align 8, !tbaa !58
  %452 = getelementptr double, ptr %451, i64 %6
  %453 = getelementptr inbounds nuw i8, ptr %156, i64 7600
  %454 = load ptr, ptr %453, align 16, !tbaa !48
  %455 = getelementptr double, ptr %454, i64 %6
  %456 = getelementptr inbounds nuw i8, ptr %156, i64 7592
  %457 = load ptr, ptr %456, align 8, !tbaa !65
  %458 = getelementptr double, ptr %457, i64 %6
  br label %472

459:                                              ; preds = %472, %302
  %460 = icmp slt i64 %158, 0
  br i1 %460, label %533, label %461

461:                                              ; preds = %459
  %462 = getelementptr inbounds nuw i8, ptr %156, i64 7744
  %463 = load ptr, ptr %462, align 64, !tbaa !60
  %464 = getelementptr double, ptr %463, i64 %6
  %465 = getelementptr inbounds nuw i8, ptr %156, i64 7736
  %466 = load ptr, ptr %465, align 8, !tbaa !50
  %467 = getelementptr double, ptr %466, i64 %6
  %468 = icmp eq i64 %158, 0
  br i1 %468, label %481, label %469

469:                                              ; preds = %461
  %470 = add nuw i64 %158, 1
  %471 = and i64 %470, -2
  br label %506

472:                                              ; preds = %443, %472
  %473 = phi i64 [ 0, %443 ], [ %479, %472 ]
  %474 = getelementptr <8 x double>, ptr %446, i64 %473
  store double %223, ptr %474, align 8, !tbaa !43
  %475 = getelementptr <8 x double>, ptr %449, i64 %473
  store double %223, ptr %475, align 8, !tbaa !43
  %476 = getelementptr <8 x double>, ptr %452, i64 %473
  store double %223, ptr %476, align 8, !tbaa !43
  %477 = getelementptr <8 x double>, ptr %455, i64 %473
  store double 1.000000e+00, ptr %477, align 8, !tbaa !43
  %478 = getelementptr <8 x double>, ptr %458, i64 %473
  store double 1.000000e+00, ptr %478, align 8, !tbaa !43
  %479 = add nuw nsw i64 %473, 1
  %480 = icmp eq i64 %479, %157
  br i1 %480, label %459, label %472, !llvm.loop !157

481:                                              ; preds = %520, %461
  %482 = phi i64 [ 0, %461 ], [ %524, %520 ]
  %483 = and i64 %158, 1
  %484 = icmp eq i64 %483, 0
  br i1 %484, label %485, label %493

485:                                              ; preds = %481
  %486 = icmp slt i64 %482, %158
  br i1 %486, label %489, label %487

487:                                              ; preds = %485
  %488 = load double, ptr %322, align 8, !tbaa !43
  br label %489

489:                                              ; preds = %487, %485
  %490 = phi double [ %488, %487 ], [ %317, %485 ]
  %491 = getelementptr <8 x double>, ptr %464, i64 %482
  store double %490, ptr %491, align 8, !tbaa !43
  %492 = getelementptr <8 x double>, ptr %467, i64 %482
  store double %490, ptr %492, align 8, !tbaa !43
  br label %493

493:                                              ; preds = %481, %489
  %494 = icmp eq i64 %158, 0
  br i1 %494, label %533, label %495

495:                                              ; preds = %493
  %496 = getelementptr inbounds nuw i8, ptr %156, i64 7696
  %497 = load ptr, ptr %496, align 16, !tbaa !62
  %498 = getelementptr double, ptr %497, i64 %6
  %499 = getelementptr inbounds nuw i8, ptr %156, i64 7688
  %500 = load ptr, ptr %499, align 8, !tbaa !51
  %501 = getelementptr double, ptr %500, i64 %6
  %502 = and i64 %158, 1
  %503 = icmp eq i64 %158, 1
  br i1 %503, label %527, label %504

504:                                              ; preds = %495
  %505 = and i64 %158, 9223372036854775806
  br label %537

506:                                              ; preds = %520, %469
  %507 = phi i64 [ 0, %469 ], [ %524, %520 ]
  %508 = phi i64 [ 0, %469 ], [ %525, %520 ]
  %509 = icmp slt i64 %507, %158
  br i1 %509, label %512, label %510

510:                                              ; preds = %506
  %511 = load double, ptr %322, align 8, !tbaa !43
  br label %512

512:                                              ; preds = %506, %510
  %513 = phi double [ %511, %510 ], [ %317, %506 ]
  %514 = getelementptr <8 x double>, ptr %464, i64 %507
  store double %513, ptr %514, align 8, !tbaa !43
  %515 = getelementptr <8 x double>, ptr %467, i64 %507
  store double %513, ptr %515, align 8, !tbaa !43
  %516 = or disjoint i64 %507, 1
  %517 = icmp slt i64 %516, %158
  br i1 %517, label %520, label %518

518:                                              ; preds = %512
  %519 = load double, ptr %322, align 8, !tbaa !43
  br label %520

520:                                              ; preds = %518, %512
  %521 = phi double [ %519, %518 ], [ %317, %512 ]
  %522 = getelementptr <8 x double>, ptr %464, i64 %516
  store double %521, ptr %522, align 8, !tbaa !43
  %523 = getelementptr <8 x double>, ptr %467, i64 %516
  store double %521, ptr %523, align 8, !tbaa !43
  %524 = add nuw i64 %507, 2
  %525 = add i64 %508, 2
  %526 = icmp eq i64 %525, %471
  br i1 %526, label %481, label %506, !llvm.loop !158

527:                                              ; preds = %537, %495
  %528 = phi i64 [ 0, %495 ], [ %545, %537 ]
  %529 = icmp eq i64 %502, 0
  br i1 %529, label %533, label %530

530:                                              ; preds = %527
  %531 = getelementptr <8 x double>, ptr %498, i64 %528
  store double %223, ptr %531, align 8, !tbaa !43
  %532 = getelementptr <8 x double>, ptr %501, i64 %528
  store double %223, ptr %532, align 8, !tbaa !43
  br label %533

533:                                              ; preds = %530, %527, %459, %493
  %534 = add nuw nsw i64 %155, 1
  %535 = load i64, ptr %27, align 8, !tbaa !20
  %536 = icmp slt i64 %534, %535
  br i1 %536, label %154, label %61, !llvm.loop !159

537:                                              ; preds = %537, %504
  %538 = phi i64 [ 0, %504 ], [ %545, %537 ]
  %539 = phi i64 [ 0, %504 ], [ %546, %537 ]
  %540 = getelementptr <8 x double>, ptr %498, i64 %538
  store double %223, ptr %540, align 8, !tbaa !43
  %541 = getelementptr <8 x double>, ptr %501, i64 %538
  store double %223, ptr %541, align 8, !tbaa !43
  %542 = or disjoint i64 %538, 1
  %543 = getelementptr <8 x double>, ptr %498, i64 %542
  store double %223, ptr %543, align 8, !tbaa !43
  %544 = getelementptr <8 x double>, ptr %501, i64 %542
  store double %223, ptr %544, align 8, !tbaa !43
  %545 = add nuw nsw i64 %538, 2
  %546 = add i64 %539, 2
  %547 = icmp eq i64 %546, %505
  br i1 %547, label %527, label %537, !llvm.loop !160
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !161
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !162
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
  %19 = load double, ptr %18, align 8, !tbaa !43
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !163
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !43
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !43
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
  %40 = load double, ptr %39, align 8, !tbaa !43
  %41 = getelementptr inbounds nuw i8, ptr %39, i64 40
  %42 = load double, ptr %41, align 8, !tbaa !43
  %43 = fcmp ult double %42, 0.000000e+00
  br i1 %43, label %49, label %44

44:                                               ; preds = %36
  %45 = load double, ptr %35, align 8, !tbaa !43
  %46 = fsub double %42, %45
  %47 = fcmp ogt double %46, 0x3EB0C6F7A0B5ED8D
  %48 = select i1 %47, double %46, double 0.000000e+00
  br label %49

49:                                               ; preds = %44, %36
  %50 = phi double [ %48, %44 ], [ %40, %36 ]
  %51 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %52 = load double, ptr %51, align 8, !tbaa !43
  %53 = fcmp oeq double %52, 2.000000e+00
  br i1 %53, label %54, label %62

54:                                               ; preds = %49
  %55 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %56 = load double, ptr %55, align 8, !tbaa !43
  %57 = fcmp oeq double %56, 4.000000e+00
  br i1 %57, label %58, label %62

58:                                               ; preds = %54
  %59 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %60 = load double, ptr %59, align 8, !tbaa !43
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
  br i1 %68, label %69, label %36, !llvm.loop !164

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !43
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !43
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !43
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !43
  br label %270

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !43
  %82 = load double, ptr %35, align 8, !tbaa !43
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !43
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !43
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !43
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !43
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !43
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !43
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !43
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !43
  %99 = load double, ptr %80, align 8, !tbaa !43
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !43
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %201

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
  br i1 %138, label %139, label %117, !llvm.loop !165

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
  %154 = extractelement <8 x double> %153, i32 %2
  %155 = fmul double %154, 4.615260e+02
  %156 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %157 = getelementptr inbounds double, ptr %156, i64 %10
  %158 = load double, ptr %157, align 8, !tbaa !43
  %159 = fmul double %158, %155
  %160 = fdiv double %159, %30
  %161 = fcmp ogt double %160, 0.000000e+00
  %162 = fneg double %160
  %163 = select i1 %161, double %162, double -0.000000e+00
  %164 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %165 = getelementptr inbounds double, ptr %164, i64 %10
  %166 = load double, ptr %165, align 8, !tbaa !43
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
  store double %198, ptr %200, align 8, !tbaa !43
  br label %201

201:                                              ; preds = %79, %152
  %202 = fcmp une double %99, %103
  br i1 %202, label %203, label %242

203:                                              ; preds = %201
  %204 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %205 = getelementptr inbounds double, ptr %204, i64 %10
  store double %99, ptr %205, align 8, !tbaa !43
  %206 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %207 = getelementptr inbounds double, ptr %206, i64 %10
  store double %82, ptr %207, align 8, !tbaa !43
  %208 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %209 = getelementptr inbounds double, ptr %208, i64 %10
  %210 = load double, ptr %209, align 8, !tbaa !43
  %211 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %212 = getelementptr inbounds double, ptr %211, i64 %10
  store double %210, ptr %212, align 8, !tbaa !43
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %214 = getelementptr inbounds i64, ptr %213, i64 %10
  store i64 -1, ptr %214, align 8, !tbaa !30
  %215 = fcmp oeq double %99, 0.000000e+00
  %216 = fcmp oeq double %99, 3.000000e+00
  %217 = or i1 %215, %216
  br i1 %217, label %218, label %226

218:                                              ; preds = %203
  %219 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %220 = getelementptr inbounds double, ptr %219, i64 %10
  store double %30, ptr %220, align 8, !tbaa !43
  store double %30, ptr %26, align 8, !tbaa !43
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %222 = getelementptr inbounds double, ptr %221, i64 %10
  %223 = load double, ptr %222, align 8, !tbaa !43
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %225 = getelementptr inbounds double, ptr %224, i64 %10
  store double %223, ptr %225, align 8, !tbaa !43
  br label %226

226:                                              ; preds = %203, %218
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %228 = load i64, ptr %227, align 8, !tbaa !20
  %229 = icmp sgt i64 %228, 0
  br i1 %229, label %230, label %242

230:                                              ; preds = %226
  %231 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %232 = load ptr, ptr %231, align 8, !tbaa !28
  %233 = getelementptr i64, ptr %232, i64 %10
  %234 = sext i1 %216 to i64
  br label %235

235:                                              ; preds = %230, %235
  %236 = phi i64 [ 0, %230 ], [ %239, %235 ]
  %237 = getelementptr %struct.Piece, ptr %233, i64 %236, i32 38
  store i64 -1, ptr %237, align 8, !tbaa !30
  %238 = getelementptr %struct.Piece, ptr %233, i64 %236, i32 39
  store i64 %234, ptr %238, align 8, !tbaa !30
  %239 = add nuw nsw i64 %236, 1
  %240 = load i64, ptr %227, align 8, !tbaa !20
  %241 = icmp slt i64 %239, %240
  br i1 %241, label %235, label %242, !llvm.loop !166

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
  %252 = fadd <8 x double> %251, splat (double -1.000000e-03)
  %253 = fcmp ult <8 x double> %246, %252
  %254 = fsub <8 x double> %250, %249
  %255 = fadd <8 x double> %254, splat (double 1.000000e-03)
  %256 = fcmp ole <8 x double> %246, %255
  %257 = getelementptr inbounds nuw i8, ptr %0, i64 5440
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
  %267 = getelementptr inbounds nuw i8, ptr %0, i64 5504
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
!36 = distinct !{!36, !37}
!37 = !{!"llvm.loop.mustprogress"}
!38 = !{!17, !11, i64 5952}
!39 = !{!5, !6, i64 0}
!40 = distinct !{!40, !37}
!41 = !{!5, !6, i64 176}
!42 = !{!5, !6, i64 184}
!43 = !{!9, !9, i64 0}
!44 = !{!5, !10, i64 208}
!45 = !{!5, !10, i64 192}
!46 = !{!5, !10, i64 200}
!47 = !{!32, !11, i64 7568}
!48 = !{!32, !11, i64 7600}
!49 = !{!32, !11, i64 7656}
!50 = !{!32, !11, i64 7736}
!51 = !{!32, !11, i64 7688}
!52 = distinct !{!52, !37}
!53 = distinct !{!53, !37}
!54 = distinct !{!54, !37}
!55 = distinct !{!55, !37}
!56 = distinct !{!56, !37}
!57 = !{!32, !11, i64 7576}
!58 = !{!32, !11, i64 7560}
!59 = !{!32, !11, i64 7584}
!60 = !{!32, !11, i64 7744}
!61 = distinct !{!61, !37}
!62 = !{!32, !11, i64 7696}
!63 = !{!32, !11, i64 7704}
!64 = distinct !{!64, !37}
!65 = !{!32, !11, i64 7592}
!66 = distinct !{!66, !37}
!67 = distinct !{!67, !37}
!68 = distinct !{!68, !37}
!69 = distinct !{!69, !37}
!70 = distinct !{!70, !37}
!71 = distinct !{!71, !37}
!72 = !{!32, !11, i64 7648}
!73 = !{!32, !11, i64 7624}
!74 = !{!32, !11, i64 7632}
!75 = !{!32, !11, i64 7640}
!76 = !{!32, !11, i64 7608}
!77 = !{!32, !11, i64 7616}
!78 = distinct !{!78, !37}
!79 = distinct !{!79, !37}
!80 = !{!32, !11, i64 7728}
!81 = distinct !{!81, !37}
!82 = !{!32, !11, i64 7712}
!83 = !{!32, !11, i64 7720}
!84 = distinct !{!84, !37}
!85 = distinct !{!85, !37}
!86 = distinct !{!86, !37}
!87 = distinct !{!87, !37}
!88 = !{!89}
!89 = distinct !{!89, !90, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!90 = distinct !{!90, !"_ZL9evaporateR5GroupDv8_d"}
!91 = !{!92, !89}
!92 = distinct !{!92, !93, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d: argument 0"}
!93 = distinct !{!93, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d"}
!94 = distinct !{!94, !37}
!95 = distinct !{!95, !37}
!96 = !{!97}
!97 = distinct !{!97, !98, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!98 = distinct !{!98, !"_ZL7outflowRK5GroupDv8_dS2_"}
!99 = !{!100}
!100 = distinct !{!100, !101, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!101 = distinct !{!101, !"_ZL8condenseR5GroupDv8_d"}
!102 = distinct !{!102, !37}
!103 = !{!104}
!104 = distinct !{!104, !105, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!105 = distinct !{!105, !"_ZL9evaporateR5GroupDv8_d"}
!106 = !{!107, !104}
!107 = distinct !{!107, !108, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d: argument 0"}
!108 = distinct !{!108, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d"}
!109 = distinct !{!109, !37}
!110 = distinct !{!110, !37}
!111 = !{!32, !11, i64 7680}
!112 = distinct !{!112, !37}
!113 = distinct !{!113, !37}
!114 = distinct !{!114, !37}
!115 = distinct !{!115, !37}
!116 = distinct !{!116, !37}
!117 = distinct !{!117, !37}
!118 = distinct !{!118, !37}
!119 = distinct !{!119, !37}
!120 = distinct !{!120, !37}
!121 = !{!32, !11, i64 7664}
!122 = distinct !{!122, !37}
!123 = distinct !{!123, !37}
!124 = distinct !{!124, !37}
!125 = distinct !{!125, !37}
!126 = distinct !{!126, !37}
!127 = distinct !{!127, !37}
!128 = distinct !{!128, !37}
!129 = distinct !{!129, !37}
!130 = distinct !{!130, !37}
!131 = distinct !{!131, !37}
!132 = distinct !{!132, !37}
!133 = distinct !{!133, !37}
!134 = !{!5, !6, i64 40}
!135 = distinct !{!135, !37}
!136 = distinct !{!136, !37}
!137 = !{!5, !6, i64 56}
!138 = !{!10, !10, i64 0}
!139 = !{!5, !12, i64 168}
!140 = !{!5, !10, i64 160}
!141 = distinct !{!141, !37}
!142 = distinct !{!142, !143}
!143 = !{!"llvm.loop.unroll.disable"}
!144 = distinct !{!144, !37}
!145 = distinct !{!145, !37}
!146 = distinct !{!146, !143}
!147 = !{!5, !10, i64 80}
!148 = !{!5, !10, i64 72}
!149 = !{!5, !10, i64 96}
!150 = !{!5, !12, i64 104}
!151 = distinct !{!151, !37}
!152 = distinct !{!152, !37}
!153 = distinct !{!153, !37}
!154 = distinct !{!154, !143}
!155 = distinct !{!155, !37}
!156 = distinct !{!156, !37}
!157 = distinct !{!157, !37}
!158 = distinct !{!158, !37}
!159 = distinct !{!159, !37}
!160 = distinct !{!160, !37}
!161 = !{!5, !10, i64 88}
!162 = !{!5, !12, i64 112}
!163 = !{!5, !12, i64 120}
!164 = distinct !{!164, !37}
!165 = distinct !{!165, !37}
!166 = distinct !{!166, !37}
