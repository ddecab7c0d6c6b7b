; Made by scripts/lanes.py from sources of sha256 e30e3c9571212f0c96a8bec273b65f29bd4d059245f6cc48f54a331587b4a16e.
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
  br i1 %138, label %4853, label %139

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

546:                                              ; preds = %4810, %4852, %4849, %3235, %3511, %545
  %547 = load i64, ptr %133, align 8, !tbaa !41
  %548 = load i64, ptr %134, align 8, !tbaa !42
  %549 = sub nsw i64 %547, %548
  %550 = icmp slt i64 %549, 16
  br i1 %550, label %4853, label %542

551:                                              ; preds = %545
  %552 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %553 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %552)
  %554 = icmp eq i64 %553, 0
  br i1 %554, label %4853, label %555

555:                                              ; preds = %551
  %556 = load <8 x i64>, ptr %155, align 64, !tbaa !26
  %557 = and <8 x i64> %556, %552
  %558 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %557)
  %559 = icmp eq i64 %558, 0
  %560 = load i64, ptr %166, align 8, !tbaa !20
  br i1 %559, label %1138, label %561

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
  br i1 %731, label %732, label %1048

732:                                              ; preds = %644, %1031
  %733 = phi i64 [ %1032, %1031 ], [ 0, %644 ]
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
  br label %1035

772:                                              ; preds = %1035
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
  br label %1031

918:                                              ; preds = %908
  %919 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %920 = fneg <8 x double> %919
  %921 = getelementptr inbounds nuw i8, ptr %735, i64 1728
  %922 = load <8 x double>, ptr %921, align 64, !tbaa !26
  %923 = fdiv <8 x double> %920, %922
  %924 = fcmp ogt <8 x double> %923, splat (double -7.000000e+02)
  %925 = select <8 x i1> %924, <8 x double> %923, <8 x double> splat (double -7.000000e+02)
  %926 = fcmp olt <8 x double> %925, splat (double 7.000000e+02)
  %927 = select <8 x i1> %926, <8 x double> %925, <8 x double> splat (double 7.000000e+02)
  %928 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %927, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %929 = fadd <8 x double> %928, splat (double 0xC338000000000000)
  %930 = fneg <8 x double> %929
  %931 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %930, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %927)
  %932 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %930, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %931)
  %933 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %932, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %933, <8 x double> %932, <8 x double> splat (double 0x3E5AE64567F544E4))
  %935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %934, <8 x double> %932, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %936 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %935, <8 x double> %932, <8 x double> splat (double 0x3EC71DE3A556C734))
  %937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %936, <8 x double> %932, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %938 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %937, <8 x double> %932, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %939 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %938, <8 x double> %932, <8 x double> splat (double 0x3F56C16C16C16C17))
  %940 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %939, <8 x double> %932, <8 x double> splat (double 0x3F81111111111111))
  %941 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %940, <8 x double> %932, <8 x double> splat (double 0x3FA5555555555555))
  %942 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %941, <8 x double> %932, <8 x double> splat (double 0x3FC5555555555555))
  %943 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %942, <8 x double> %932, <8 x double> splat (double 5.000000e-01))
  %944 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %943, <8 x double> %932, <8 x double> splat (double 1.000000e+00))
  %945 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %944, <8 x double> %932, <8 x double> splat (double 1.000000e+00))
  %946 = bitcast <8 x double> %928 to <8 x i64>
  %947 = shl <8 x i64> %946, splat (i64 52)
  %948 = bitcast <8 x double> %945 to <8 x i64>
  %949 = add <8 x i64> %947, %948
  %950 = bitcast <8 x i64> %949 to <8 x double>
  %951 = fsub <8 x double> splat (double 1.000000e+00), %950
  %952 = load <8 x double>, ptr %802, align 64, !tbaa !26
  %953 = getelementptr inbounds nuw i8, ptr %735, i64 7552
  %954 = load i64, ptr %953, align 64, !tbaa !31
  %955 = load i64, ptr %141, align 16, !tbaa !21
  %956 = icmp slt i64 %954, %955
  br i1 %956, label %957, label %962

957:                                              ; preds = %918
  %958 = getelementptr inbounds nuw i8, ptr %735, i64 1792
  %959 = getelementptr inbounds nuw i8, ptr %735, i64 1856
  %960 = getelementptr inbounds nuw i8, ptr %735, i64 7600
  %961 = getelementptr inbounds nuw i8, ptr %735, i64 7592
  br label %974

962:                                              ; preds = %974, %918
  %963 = phi <8 x double> [ zeroinitializer, %918 ], [ %1012, %974 ]
  %964 = phi <8 x double> [ zeroinitializer, %918 ], [ %1027, %974 ]
  %965 = getelementptr inbounds nuw i8, ptr %735, i64 3776
  %966 = load <8 x double>, ptr %965, align 64, !tbaa !26
  %967 = fsub <8 x double> %966, %952
  %968 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %963, <8 x double> %967, <8 x double> %964)
  %969 = getelementptr inbounds nuw i8, ptr %735, i64 7168
  %970 = load <8 x double>, ptr %799, align 64, !tbaa !26
  %971 = fmul <8 x double> %970, %968
  %972 = load <8 x double>, ptr %969, align 64, !tbaa !26
  %973 = select <8 x i1> %647, <8 x double> %972, <8 x double> %971
  store <8 x double> %973, ptr %969, align 64, !tbaa !26
  br label %1031

974:                                              ; preds = %957, %974
  %975 = phi <8 x double> [ zeroinitializer, %957 ], [ %1027, %974 ]
  %976 = phi i64 [ %954, %957 ], [ %1028, %974 ]
  %977 = load ptr, ptr %816, align 16, !tbaa !47
  %978 = getelementptr inbounds <8 x double>, ptr %977, i64 %976
  %979 = load <8 x double>, ptr %978, align 64, !tbaa !26
  %980 = load ptr, ptr %822, align 8, !tbaa !58
  %981 = getelementptr inbounds <8 x double>, ptr %980, i64 %976
  %982 = load <8 x double>, ptr %981, align 64, !tbaa !26
  %983 = fadd <8 x double> %979, %982
  %984 = load <8 x double>, ptr %958, align 64, !tbaa !26
  %985 = fneg <8 x double> %984
  %986 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %983, <8 x double> splat (double 5.000000e-01), <8 x double> %985)
  %987 = load <8 x double>, ptr %959, align 64, !tbaa !26
  %988 = fmul <8 x double> %986, %987
  %989 = fcmp ogt <8 x double> %988, splat (double -5.000000e+00)
  %990 = select <8 x i1> %989, <8 x double> %988, <8 x double> splat (double -5.000000e+00)
  %991 = fcmp olt <8 x double> %990, splat (double 5.000000e+00)
  %992 = select <8 x i1> %991, <8 x double> %990, <8 x double> splat (double 5.000000e+00)
  %993 = fmul <8 x double> %992, %992
  %994 = fadd <8 x double> %993, splat (double 3.780000e+02)
  %995 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %993, <8 x double> %994, <8 x double> splat (double 1.732500e+04))
  %996 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %993, <8 x double> %995, <8 x double> splat (double 1.351350e+05))
  %997 = fmul <8 x double> %992, %996
  %998 = load <8 x double>, ptr %909, align 64, !tbaa !26
  %999 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %993, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1000 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %993, <8 x double> %999, <8 x double> splat (double 6.237000e+04))
  %1001 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %993, <8 x double> %1000, <8 x double> splat (double 1.351350e+05))
  %1002 = fdiv <8 x double> %997, %1001
  %1003 = fadd <8 x double> %1002, splat (double 1.000000e+00)
  %1004 = fmul <8 x double> %998, %1003
  %1005 = load ptr, ptr %960, align 16, !tbaa !48
  %1006 = getelementptr inbounds <8 x double>, ptr %1005, i64 %976
  %1007 = load <8 x double>, ptr %1006, align 64, !tbaa !26
  %1008 = fadd <8 x double> %1007, splat (double -1.000000e+00)
  %1009 = fadd <8 x double> %1008, %1004
  %1010 = fcmp ogt <8 x double> %1009, zeroinitializer
  %1011 = select <8 x i1> %1010, <8 x double> %1009, <8 x double> zeroinitializer
  %1012 = fmul <8 x double> %951, %1011
  %1013 = load ptr, ptr %961, align 8, !tbaa !65
  %1014 = getelementptr inbounds <8 x double>, ptr %1013, i64 %976
  %1015 = fsub <8 x double> %1007, %1012
  %1016 = load <8 x double>, ptr %1014, align 64, !tbaa !26
  %1017 = select <8 x i1> %647, <8 x double> %1016, <8 x double> %1015
  store <8 x double> %1017, ptr %1014, align 64, !tbaa !26
  %1018 = load ptr, ptr %820, align 8, !tbaa !49
  %1019 = getelementptr inbounds <8 x double>, ptr %1018, i64 %976
  %1020 = load <8 x double>, ptr %1019, align 64, !tbaa !26
  %1021 = load i64, ptr %953, align 64, !tbaa !31
  %1022 = icmp slt i64 %976, %1021
  %1023 = load <8 x double>, ptr %800, align 64, !tbaa !26
  %1024 = fsub <8 x double> %952, %1023
  %1025 = select i1 %1022, <8 x double> %1023, <8 x double> %1024
  %1026 = fmul <8 x double> %1020, %1025
  %1027 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1012, <8 x double> %1026, <8 x double> %975)
  %1028 = add nsw i64 %976, 1
  %1029 = load i64, ptr %141, align 16, !tbaa !21
  %1030 = icmp slt i64 %1028, %1029
  br i1 %1030, label %974, label %962, !llvm.loop !66

1031:                                             ; preds = %914, %962
  %1032 = add nuw nsw i64 %733, 1
  %1033 = load i64, ptr %166, align 8, !tbaa !20
  %1034 = icmp slt i64 %1032, %1033
  br i1 %1034, label %732, label %1048, !llvm.loop !67

1035:                                             ; preds = %732, %1035
  %1036 = phi i64 [ 0, %732 ], [ %1046, %1035 ]
  %1037 = getelementptr inbounds nuw [12 x <8 x double>], ptr %769, i64 0, i64 %1036
  %1038 = getelementptr inbounds nuw [12 x <8 x double>], ptr %770, i64 0, i64 %1036
  %1039 = load <8 x double>, ptr %1038, align 64, !tbaa !26
  %1040 = getelementptr inbounds nuw [12 x <8 x double>], ptr %771, i64 0, i64 %1036
  %1041 = load <8 x double>, ptr %1040, align 64, !tbaa !26
  %1042 = fsub <8 x double> %1039, %1041
  %1043 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %768, <8 x double> %1042, <8 x double> %1039)
  %1044 = load <8 x double>, ptr %1037, align 64, !tbaa !26
  %1045 = select <8 x i1> %647, <8 x double> %1044, <8 x double> %1043
  store <8 x double> %1045, ptr %1037, align 64, !tbaa !26
  %1046 = add nuw nsw i64 %1036, 1
  %1047 = icmp eq i64 %1046, 11
  br i1 %1047, label %772, label %1035, !llvm.loop !68

1048:                                             ; preds = %1031, %644
  %1049 = phi i64 [ %730, %644 ], [ %1033, %1031 ]
  %1050 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %1051 = fcmp ogt <8 x double> %1050, zeroinitializer
  %1052 = select <8 x i1> %1051, <8 x i64> %557, <8 x i64> zeroinitializer
  %1053 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1052)
  %1054 = icmp eq i64 %1053, 0
  br i1 %1054, label %1138, label %1055

1055:                                             ; preds = %1048
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1052, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1056 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %1057 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %1058 = fadd <8 x double> %1056, %1057
  store <8 x double> %1058, ptr %9, align 64, !tbaa !26
  %1059 = load ptr, ptr %184, align 8
  %1060 = load ptr, ptr %186, align 8
  %1061 = load ptr, ptr %187, align 8
  br label %1062

1062:                                             ; preds = %1130, %1055
  %1063 = phi i64 [ 0, %1055 ], [ %1131, %1130 ]
  %1064 = getelementptr inbounds nuw i64, ptr %7, i64 %1063
  %1065 = load i64, ptr %1064, align 8, !tbaa !30
  %1066 = icmp eq i64 %1065, 0
  br i1 %1066, label %1130, label %1067

1067:                                             ; preds = %1062
  %1068 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %1063
  %1069 = load i64, ptr %1068, align 8, !tbaa !30
  %1070 = shl nsw i64 %1069, 1
  %1071 = getelementptr inbounds i64, ptr %1059, i64 %1070
  %1072 = load i64, ptr %1071, align 8, !tbaa !30
  %1073 = shl nuw nsw i64 %1063, 1
  %1074 = getelementptr inbounds nuw [16 x i64], ptr %185, i64 0, i64 %1073
  %1075 = getelementptr inbounds i64, ptr %1061, i64 %1070
  %1076 = load i64, ptr %1075, align 8, !tbaa !30
  %1077 = shl nsw i64 %1076, 4
  %1078 = getelementptr inbounds i8, ptr %1060, i64 %1077
  %1079 = getelementptr inbounds nuw double, ptr %9, i64 %1063
  %1080 = load double, ptr %1079, align 8, !tbaa !43
  %1081 = load i64, ptr %1074, align 8, !tbaa !30
  %1082 = getelementptr i8, ptr %1078, i64 -16
  %1083 = icmp sgt i64 %1081, 0
  br i1 %1083, label %1084, label %1093

1084:                                             ; preds = %1067, %1090
  %1085 = phi i64 [ %1091, %1090 ], [ %1081, %1067 ]
  %1086 = shl i64 %1085, 4
  %1087 = getelementptr i8, ptr %1082, i64 %1086
  %1088 = load double, ptr %1087, align 8, !tbaa !43
  %1089 = fcmp ugt double %1080, %1088
  br i1 %1089, label %1093, label %1090

1090:                                             ; preds = %1084
  %1091 = add nsw i64 %1085, -1
  store i64 %1091, ptr %1074, align 8, !tbaa !30
  %1092 = icmp sgt i64 %1085, 1
  br i1 %1092, label %1084, label %1093, !llvm.loop !69

1093:                                             ; preds = %1090, %1084, %1067
  %1094 = phi i64 [ %1081, %1067 ], [ 0, %1090 ], [ %1085, %1084 ]
  %1095 = icmp slt i64 %1094, %1072
  br i1 %1095, label %1096, label %1105

1096:                                             ; preds = %1093, %1102
  %1097 = phi i64 [ %1103, %1102 ], [ %1094, %1093 ]
  %1098 = shl nsw i64 %1097, 4
  %1099 = getelementptr inbounds i8, ptr %1078, i64 %1098
  %1100 = load double, ptr %1099, align 8, !tbaa !43
  %1101 = fcmp ule double %1080, %1100
  br i1 %1101, label %1110, label %1102

1102:                                             ; preds = %1096
  %1103 = add i64 %1097, 1
  store i64 %1103, ptr %1074, align 8, !tbaa !30
  %1104 = icmp eq i64 %1103, %1072
  br i1 %1104, label %1105, label %1096, !llvm.loop !70

1105:                                             ; preds = %1102, %1093
  %1106 = shl i64 %1072, 4
  %1107 = getelementptr i8, ptr %1078, i64 %1106
  %1108 = getelementptr i8, ptr %1107, i64 -8
  %1109 = load double, ptr %1108, align 8, !tbaa !43
  br label %1127

1110:                                             ; preds = %1096
  %1111 = shl nsw i64 %1097, 1
  %1112 = or disjoint i64 %1111, 1
  %1113 = getelementptr inbounds double, ptr %1078, i64 %1112
  %1114 = load double, ptr %1113, align 8, !tbaa !43
  %1115 = icmp sgt i64 %1097, 0
  br i1 %1115, label %1116, label %1127

1116:                                             ; preds = %1110
  %1117 = getelementptr inbounds nuw i8, ptr %1078, i64 %1098
  %1118 = getelementptr i8, ptr %1117, i64 -8
  %1119 = load double, ptr %1118, align 8, !tbaa !43
  %1120 = getelementptr i8, ptr %1117, i64 -16
  %1121 = load double, ptr %1120, align 8, !tbaa !43
  %1122 = fsub double %1080, %1121
  %1123 = fsub double %1100, %1121
  %1124 = fdiv double %1122, %1123
  %1125 = fsub double %1114, %1119
  %1126 = tail call double @llvm.fmuladd.f64(double %1124, double %1125, double %1119)
  br label %1127

1127:                                             ; preds = %1116, %1110, %1105
  %1128 = phi double [ %1126, %1116 ], [ %1114, %1110 ], [ %1109, %1105 ]
  %1129 = getelementptr inbounds nuw double, ptr %8, i64 %1063
  store double %1128, ptr %1129, align 8, !tbaa !43
  br label %1130

1130:                                             ; preds = %1127, %1062
  %1131 = add nuw nsw i64 %1063, 1
  %1132 = icmp eq i64 %1131, 8
  br i1 %1132, label %1133, label %1062, !llvm.loop !71

1133:                                             ; preds = %1130
  %1134 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1135 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %1136 = icmp eq <8 x i64> %1052, zeroinitializer
  %1137 = select <8 x i1> %1136, <8 x double> %1135, <8 x double> %1134
  store <8 x double> %1137, ptr %173, align 64, !tbaa !26
  br label %1138

1138:                                             ; preds = %1048, %1133, %555
  %1139 = phi i64 [ %1049, %1048 ], [ %1049, %1133 ], [ %560, %555 ]
  %1140 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %1141 = icmp eq <8 x i64> %557, zeroinitializer
  %1142 = select <8 x i1> %1141, <8 x double> %1140, <8 x double> zeroinitializer
  store <8 x double> %1142, ptr %188, align 64, !tbaa !26
  %1143 = icmp sgt i64 %1139, 0
  br i1 %1143, label %1149, label %1144

1144:                                             ; preds = %1138
  %1145 = load <8 x double>, ptr %192, align 64, !tbaa !26
  br label %1854

1146:                                             ; preds = %1848
  %1147 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %1148 = icmp sgt i64 %1852, 0
  br i1 %1148, label %1860, label %1854

1149:                                             ; preds = %1138, %1848
  %1150 = phi i64 [ %1851, %1848 ], [ 0, %1138 ]
  %1151 = load ptr, ptr %151, align 8, !tbaa !28
  %1152 = getelementptr inbounds nuw %struct.Piece, ptr %1151, i64 %1150
  %1153 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %1154 = getelementptr inbounds nuw i8, ptr %1152, i64 6400
  %1155 = load <8 x double>, ptr %1154, align 64, !tbaa !26
  %1156 = fsub <8 x double> %1153, %1155
  %1157 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1156)
  %1158 = getelementptr inbounds nuw i8, ptr %1152, i64 2176
  %1159 = load <8 x double>, ptr %1158, align 64, !tbaa !26
  %1160 = fcmp ogt <8 x double> %1159, splat (double 1.000000e-09)
  %1161 = select <8 x i1> %1160, <8 x double> %1159, <8 x double> splat (double 1.000000e-09)
  %1162 = fdiv <8 x double> %1157, %1161
  %1163 = getelementptr inbounds nuw i8, ptr %1152, i64 1024
  %1164 = load <8 x double>, ptr %1163, align 64, !tbaa !26
  %1165 = fcmp ule <8 x double> %1159, zeroinitializer
  %1166 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1162)
  %1167 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1166)
  %1168 = select <8 x i1> %1165, <8 x double> splat (double 1.000000e+00), <8 x double> %1167
  %1169 = fmul <8 x double> %1164, %1168
  %1170 = getelementptr inbounds nuw i8, ptr %1152, i64 1088
  %1171 = load <8 x double>, ptr %1170, align 64, !tbaa !26
  %1172 = getelementptr inbounds nuw i8, ptr %1152, i64 5632
  %1173 = load <8 x double>, ptr %1172, align 64, !tbaa !26
  %1174 = getelementptr inbounds nuw i8, ptr %1152, i64 5696
  %1175 = load <8 x double>, ptr %1174, align 64, !tbaa !26
  %1176 = fadd <8 x double> %1173, %1175
  %1177 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1171, <8 x double> %1176, <8 x double> %1169)
  %1178 = getelementptr inbounds nuw i8, ptr %1152, i64 1152
  %1179 = load <8 x double>, ptr %1178, align 64, !tbaa !26
  %1180 = fcmp olt <8 x double> %1177, %1179
  %1181 = select <8 x i1> %1180, <8 x double> %1177, <8 x double> %1179
  %1182 = getelementptr inbounds nuw i8, ptr %1152, i64 5312
  %1183 = load <8 x double>, ptr %1182, align 64, !tbaa !26
  %1184 = getelementptr inbounds nuw i8, ptr %1152, i64 3968
  %1185 = load <8 x double>, ptr %1184, align 64, !tbaa !26
  %1186 = getelementptr inbounds nuw i8, ptr %1152, i64 5376
  %1187 = load <8 x double>, ptr %1186, align 64, !tbaa !26
  %1188 = getelementptr inbounds nuw i8, ptr %1152, i64 4736
  %1189 = load <8 x double>, ptr %1188, align 64, !tbaa !26
  %1190 = fmul <8 x double> %1187, %1189
  %1191 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1183, <8 x double> %1185, <8 x double> %1190)
  %1192 = getelementptr inbounds nuw i8, ptr %1152, i64 1216
  %1193 = load <8 x double>, ptr %1192, align 64, !tbaa !26
  %1194 = fneg <8 x double> %1193
  %1195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1194, <8 x double> %1191, <8 x double> %1181)
  %1196 = getelementptr inbounds nuw i8, ptr %1152, i64 5248
  %1197 = load <8 x double>, ptr %1196, align 64, !tbaa !26
  %1198 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1193, <8 x double> %1197, <8 x double> splat (double 1.000000e+00))
  %1199 = fdiv <8 x double> %1195, %1198
  %1200 = getelementptr inbounds nuw i8, ptr %1152, i64 7488
  %1201 = load <8 x i64>, ptr %1200, align 64, !tbaa !26
  %1202 = load <8 x double>, ptr %189, align 64, !tbaa !26
  %1203 = icmp eq <8 x i64> %1201, zeroinitializer
  %1204 = select <8 x i1> %1203, <8 x double> %1153, <8 x double> %1202
  %1205 = getelementptr inbounds nuw i8, ptr %1152, i64 5504
  store <8 x double> %1204, ptr %1205, align 64, !tbaa !26
  %1206 = load <8 x double>, ptr %190, align 64, !tbaa !26
  %1207 = select <8 x i1> %1203, <8 x double> %1199, <8 x double> %1206
  %1208 = getelementptr inbounds nuw i8, ptr %1152, i64 3200
  store <8 x double> %1207, ptr %1208, align 64, !tbaa !26
  %1209 = getelementptr inbounds nuw i8, ptr %1152, i64 896
  %1210 = load <8 x double>, ptr %1209, align 64, !tbaa !26
  %1211 = fcmp ule <8 x double> %1210, zeroinitializer
  %1212 = getelementptr inbounds nuw i8, ptr %1152, i64 2944
  %1213 = getelementptr inbounds nuw i8, ptr %1152, i64 3072
  %1214 = load <8 x double>, ptr %1213, align 64, !tbaa !26
  %1215 = fcmp ogt <8 x double> %1210, splat (double 1.000000e-30)
  %1216 = select <8 x i1> %1215, <8 x double> %1210, <8 x double> splat (double 1.000000e-30)
  %1217 = fdiv <8 x double> %1214, %1216
  %1218 = fcmp ogt <8 x double> %1217, zeroinitializer
  %1219 = select <8 x i1> %1218, <8 x double> %1217, <8 x double> zeroinitializer
  %1220 = fcmp olt <8 x double> %1219, splat (double 1.000000e+00)
  %1221 = select <8 x i1> %1220, <8 x double> %1219, <8 x double> splat (double 1.000000e+00)
  %1222 = select <8 x i1> %1211, <8 x double> zeroinitializer, <8 x double> %1221
  %1223 = getelementptr inbounds nuw i8, ptr %1152, i64 2112
  %1224 = load <8 x double>, ptr %1223, align 64, !tbaa !26
  %1225 = fmul <8 x double> %1222, splat (double 4.180000e+03)
  %1226 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1225, <8 x double> %1210, <8 x double> %1224)
  %1227 = getelementptr inbounds nuw i8, ptr %1152, i64 4288
  %1228 = load <8 x double>, ptr %1227, align 64, !tbaa !26
  %1229 = getelementptr inbounds nuw i8, ptr %1152, i64 5056
  %1230 = load <8 x double>, ptr %1229, align 64, !tbaa !26
  %1231 = fmul <8 x double> %1187, %1230
  %1232 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1183, <8 x double> %1228, <8 x double> %1231)
  %1233 = getelementptr inbounds nuw i8, ptr %1152, i64 7360
  %1234 = load <8 x i64>, ptr %1233, align 64, !tbaa !26
  %1235 = fcmp ule <8 x double> %1224, zeroinitializer
  %1236 = getelementptr inbounds nuw i8, ptr %1152, i64 6912
  store <8 x double> %1222, ptr %1236, align 64, !tbaa !26
  %1237 = fmul <8 x double> %1197, %1226
  %1238 = icmp eq <8 x i64> %1234, splat (i64 -1)
  %1239 = select <8 x i1> %1235, <8 x i1> splat (i1 true), <8 x i1> %1238
  %1240 = select <8 x i1> %1239, <8 x double> zeroinitializer, <8 x double> %1237
  %1241 = getelementptr inbounds nuw i8, ptr %1152, i64 6976
  store <8 x double> %1240, ptr %1241, align 64, !tbaa !26
  %1242 = fmul <8 x double> %1232, %1226
  %1243 = select <8 x i1> %1239, <8 x double> zeroinitializer, <8 x double> %1242
  %1244 = getelementptr inbounds nuw i8, ptr %1152, i64 7040
  store <8 x double> %1243, ptr %1244, align 64, !tbaa !26
  %1245 = load <8 x double>, ptr %1152, align 64, !tbaa !26
  %1246 = load <8 x double>, ptr %1212, align 64, !tbaa !26
  %1247 = fsub <8 x double> %1245, %1246
  %1248 = fsub <8 x double> splat (double 1.000000e+00), %1222
  %1249 = getelementptr inbounds nuw i8, ptr %1152, i64 1920
  %1250 = load <8 x double>, ptr %1249, align 64, !tbaa !26
  %1251 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1248, <8 x double> %1250, <8 x double> %1247)
  %1252 = load <8 x double>, ptr %191, align 64, !tbaa !26
  %1253 = fdiv <8 x double> splat (double 1.000000e+00), %1252
  %1254 = getelementptr inbounds nuw i8, ptr %1152, i64 2240
  %1255 = load <8 x double>, ptr %1254, align 64, !tbaa !26
  %1256 = fcmp ogt <8 x double> %1255, splat (double 1.000000e-30)
  %1257 = select <8 x i1> %1256, <8 x double> %1255, <8 x double> splat (double 1.000000e-30)
  %1258 = fdiv <8 x double> %1251, %1257
  %1259 = fadd <8 x double> %1253, %1258
  %1260 = getelementptr inbounds nuw i8, ptr %1152, i64 7104
  store <8 x double> %1259, ptr %1260, align 64, !tbaa !26
  %1261 = getelementptr inbounds nuw i8, ptr %1152, i64 6784
  store <8 x double> %1173, ptr %1261, align 64, !tbaa !26
  %1262 = getelementptr inbounds nuw i8, ptr %1152, i64 2560
  %1263 = load <8 x double>, ptr %1262, align 64, !tbaa !26
  %1264 = getelementptr inbounds nuw i8, ptr %1152, i64 2624
  %1265 = load <8 x double>, ptr %1264, align 64, !tbaa !26
  %1266 = getelementptr inbounds nuw i8, ptr %1152, i64 2688
  %1267 = load <8 x double>, ptr %1266, align 64, !tbaa !26
  %1268 = getelementptr inbounds nuw i8, ptr %1152, i64 2752
  %1269 = load <8 x double>, ptr %1268, align 64, !tbaa !26
  %1270 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1269, <8 x double> %1267)
  %1271 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1270, <8 x double> %1265)
  %1272 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1271, <8 x double> %1263)
  %1273 = getelementptr inbounds nuw i8, ptr %1152, i64 3648
  store <8 x double> %1272, ptr %1273, align 64, !tbaa !26
  %1274 = getelementptr inbounds nuw i8, ptr %1152, i64 4416
  %1275 = load <8 x double>, ptr %1274, align 64, !tbaa !26
  %1276 = fmul <8 x double> %1183, %1275
  %1277 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1197, <8 x double> %1272, <8 x double> %1276)
  %1278 = getelementptr inbounds nuw i8, ptr %1152, i64 5184
  %1279 = load <8 x double>, ptr %1278, align 64, !tbaa !26
  %1280 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1187, <8 x double> %1279, <8 x double> %1277)
  %1281 = fmul <8 x double> %1280, splat (double 5.000000e-01)
  %1282 = getelementptr inbounds nuw i8, ptr %1152, i64 6720
  store <8 x double> %1281, ptr %1282, align 64, !tbaa !26
  %1283 = getelementptr inbounds nuw i8, ptr %1152, i64 2304
  %1284 = load <8 x double>, ptr %1283, align 64, !tbaa !26
  %1285 = getelementptr inbounds nuw i8, ptr %1152, i64 2368
  %1286 = load <8 x double>, ptr %1285, align 64, !tbaa !26
  %1287 = getelementptr inbounds nuw i8, ptr %1152, i64 2432
  %1288 = load <8 x double>, ptr %1287, align 64, !tbaa !26
  %1289 = getelementptr inbounds nuw i8, ptr %1152, i64 2496
  %1290 = load <8 x double>, ptr %1289, align 64, !tbaa !26
  %1291 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1290, <8 x double> %1288)
  %1292 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1291, <8 x double> %1286)
  %1293 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1292, <8 x double> %1284)
  %1294 = getelementptr inbounds nuw i8, ptr %1152, i64 6656
  store <8 x double> %1293, ptr %1294, align 64, !tbaa !26
  %1295 = getelementptr inbounds nuw i8, ptr %1152, i64 7552
  %1296 = load i64, ptr %1295, align 64, !tbaa !31
  %1297 = icmp eq i64 %1296, 0
  br i1 %1297, label %1298, label %1310

1298:                                             ; preds = %1149
  %1299 = fdiv <8 x double> %1293, %1246
  %1300 = load i64, ptr %141, align 16, !tbaa !21
  %1301 = getelementptr inbounds nuw i8, ptr %1152, i64 7672
  %1302 = load ptr, ptr %1301, align 8, !tbaa !35
  %1303 = getelementptr inbounds <8 x double>, ptr %1302, i64 %1300
  %1304 = load <8 x double>, ptr %1303, align 64, !tbaa !26
  %1305 = fmul <8 x double> %1299, %1304
  %1306 = getelementptr inbounds nuw i8, ptr %1152, i64 64
  %1307 = load <8 x double>, ptr %1306, align 64, !tbaa !26
  %1308 = fsub <8 x double> %1246, %1307
  %1309 = fdiv <8 x double> splat (double 1.000000e+00), %1308
  br label %1333

1310:                                             ; preds = %1149
  %1311 = getelementptr inbounds nuw i8, ptr %1152, i64 64
  %1312 = load <8 x double>, ptr %1311, align 64, !tbaa !26
  %1313 = fsub <8 x double> %1246, %1312
  %1314 = fdiv <8 x double> splat (double 1.000000e+00), %1313
  %1315 = load i64, ptr %141, align 16, !tbaa !21
  %1316 = getelementptr inbounds nuw i8, ptr %1152, i64 7672
  %1317 = load ptr, ptr %1316, align 8, !tbaa !35
  %1318 = shl nsw i64 %1315, 8
  %1319 = getelementptr inbounds i8, ptr %1317, i64 %1318
  %1320 = load <8 x double>, ptr %1319, align 64, !tbaa !26
  %1321 = getelementptr inbounds nuw i8, ptr %1319, i64 64
  %1322 = load <8 x double>, ptr %1321, align 64, !tbaa !26
  %1323 = getelementptr inbounds nuw i8, ptr %1319, i64 128
  %1324 = load <8 x double>, ptr %1323, align 64, !tbaa !26
  %1325 = getelementptr inbounds nuw i8, ptr %1319, i64 192
  %1326 = load <8 x double>, ptr %1325, align 64, !tbaa !26
  %1327 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1326, <8 x double> %1324)
  %1328 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1327, <8 x double> %1322)
  %1329 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1328, <8 x double> %1320)
  %1330 = icmp sgt i64 %1315, %1296
  %1331 = fmul <8 x double> %1314, %1329
  %1332 = select i1 %1330, <8 x double> %1331, <8 x double> %1329
  br label %1333

1333:                                             ; preds = %1298, %1310
  %1334 = phi <8 x double> [ %1309, %1298 ], [ %1314, %1310 ]
  %1335 = phi <8 x double> [ %1308, %1298 ], [ %1313, %1310 ]
  %1336 = phi <8 x double> [ %1305, %1298 ], [ %1332, %1310 ]
  %1337 = getelementptr inbounds nuw i8, ptr %1152, i64 5568
  %1338 = load <8 x double>, ptr %1337, align 64, !tbaa !26
  %1339 = fcmp ogt <8 x double> %1247, splat (double 0x3D719799812DEA11)
  %1340 = select <8 x i1> %1339, <8 x double> %1247, <8 x double> splat (double 0x3D719799812DEA11)
  %1341 = getelementptr inbounds nuw i8, ptr %1152, i64 6528
  store <8 x double> %1334, ptr %1341, align 64, !tbaa !26
  %1342 = getelementptr inbounds nuw i8, ptr %1152, i64 704
  %1343 = load <8 x double>, ptr %1342, align 64, !tbaa !26
  %1344 = fdiv <8 x double> %1343, %1340
  %1345 = getelementptr inbounds nuw i8, ptr %1152, i64 6592
  store <8 x double> %1344, ptr %1345, align 64, !tbaa !26
  %1346 = getelementptr inbounds nuw i8, ptr %1152, i64 7560
  %1347 = load ptr, ptr %1346, align 8, !tbaa !58
  %1348 = load i64, ptr %141, align 16, !tbaa !21
  %1349 = getelementptr <8 x double>, ptr %1347, i64 %1348
  %1350 = getelementptr i8, ptr %1349, i64 -64
  %1351 = load <8 x double>, ptr %1350, align 64, !tbaa !26
  %1352 = fadd <8 x double> %1338, %1351
  %1353 = fmul <8 x double> %1352, splat (double 5.000000e-01)
  %1354 = getelementptr inbounds nuw i8, ptr %1152, i64 192
  %1355 = load <8 x double>, ptr %1354, align 64, !tbaa !26
  %1356 = getelementptr inbounds nuw i8, ptr %1152, i64 256
  %1357 = load <8 x double>, ptr %1356, align 64, !tbaa !26
  %1358 = getelementptr inbounds nuw i8, ptr %1152, i64 320
  %1359 = load <8 x double>, ptr %1358, align 64, !tbaa !26
  %1360 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1353, <8 x double> %1359, <8 x double> %1357)
  %1361 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1353, <8 x double> %1360, <8 x double> %1355)
  %1362 = fmul <8 x double> %1336, %1361
  %1363 = fmul <8 x double> %1222, %1362
  %1364 = getelementptr inbounds nuw i8, ptr %1152, i64 2048
  %1365 = load <8 x double>, ptr %1364, align 64, !tbaa !26
  %1366 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1363, <8 x double> %1365, <8 x double> splat (double 1.000000e+00))
  %1367 = fdiv <8 x double> splat (double 1.000000e+00), %1366
  %1368 = icmp eq <8 x i64> %1234, zeroinitializer
  %1369 = select <8 x i1> %1368, <8 x double> %1367, <8 x double> splat (double 1.000000e+00)
  %1370 = getelementptr inbounds nuw i8, ptr %1152, i64 6848
  store <8 x double> %1369, ptr %1370, align 64, !tbaa !26
  %1371 = fmul <8 x double> %1362, %1369
  %1372 = getelementptr inbounds nuw i8, ptr %1152, i64 6016
  store <8 x double> %1371, ptr %1372, align 64, !tbaa !26
  %1373 = fmul <8 x double> %1281, splat (double 2.000000e+00)
  %1374 = getelementptr inbounds nuw i8, ptr %1152, i64 384
  %1375 = load <8 x double>, ptr %1374, align 64, !tbaa !26
  %1376 = getelementptr inbounds nuw i8, ptr %1152, i64 448
  %1377 = load <8 x double>, ptr %1376, align 64, !tbaa !26
  %1378 = getelementptr inbounds nuw i8, ptr %1152, i64 512
  %1379 = load <8 x double>, ptr %1378, align 64, !tbaa !26
  %1380 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1338, <8 x double> %1379, <8 x double> %1377)
  %1381 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1338, <8 x double> %1380, <8 x double> %1375)
  %1382 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1373, <8 x double> %1381, <8 x double> %1371)
  %1383 = getelementptr inbounds nuw i8, ptr %1152, i64 6144
  store <8 x double> %1382, ptr %1383, align 64, !tbaa !26
  %1384 = fmul <8 x double> %1207, %1248
  %1385 = getelementptr inbounds nuw i8, ptr %1152, i64 1984
  %1386 = load <8 x double>, ptr %1385, align 64, !tbaa !26
  %1387 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1384, <8 x double> %1386, <8 x double> splat (double 1.000000e+00))
  %1388 = fdiv <8 x double> %1207, %1387
  %1389 = load i64, ptr %142, align 8, !tbaa !22
  %1390 = sitofp i64 %1389 to double
  %1391 = fmul double %1390, 2.000000e+00
  %1392 = insertelement <8 x double> poison, double %1391, i64 0
  %1393 = shufflevector <8 x double> %1392, <8 x double> poison, <8 x i32> zeroinitializer
  %1394 = fmul <8 x double> %1344, %1393
  %1395 = fadd <8 x double> %1388, %1394
  %1396 = fdiv <8 x double> %1388, %1395
  %1397 = fmul <8 x double> %1293, %1394
  %1398 = select <8 x i1> %1368, <8 x double> %1388, <8 x double> %1397
  %1399 = getelementptr inbounds nuw i8, ptr %1152, i64 6080
  store <8 x double> %1398, ptr %1399, align 64, !tbaa !26
  %1400 = fmul <8 x double> %1394, %1396
  %1401 = select <8 x i1> %1368, <8 x double> %1388, <8 x double> %1400
  %1402 = getelementptr inbounds nuw i8, ptr %1152, i64 6208
  store <8 x double> %1401, ptr %1402, align 64, !tbaa !26
  %1403 = select <8 x i1> %1368, <8 x double> splat (double 1.000000e+00), <8 x double> %1396
  %1404 = getelementptr inbounds nuw i8, ptr %1152, i64 6272
  store <8 x double> %1403, ptr %1404, align 64, !tbaa !26
  br i1 %1297, label %1566, label %1405

1405:                                             ; preds = %1333
  %1406 = getelementptr inbounds nuw i8, ptr %1152, i64 576
  %1407 = load <8 x double>, ptr %1406, align 64, !tbaa !26
  %1408 = getelementptr inbounds nuw i8, ptr %1152, i64 640
  %1409 = load <8 x double>, ptr %1408, align 64, !tbaa !26
  %1410 = getelementptr inbounds nuw i8, ptr %1152, i64 1536
  %1411 = load <8 x double>, ptr %1410, align 64, !tbaa !26
  %1412 = load i64, ptr %141, align 16, !tbaa !21
  %1413 = fsub <8 x double> %1272, %1411
  %1414 = fmul <8 x double> %1377, splat (double 5.000000e-01)
  %1415 = fmul <8 x double> %1379, splat (double 0x3FE5555555555555)
  %1416 = getelementptr inbounds nuw i8, ptr %1152, i64 7648
  %1417 = load ptr, ptr %1416, align 32, !tbaa !72
  %1418 = getelementptr inbounds nuw i8, ptr %1152, i64 7656
  %1419 = load ptr, ptr %1418, align 8, !tbaa !49
  %1420 = getelementptr inbounds nuw i8, ptr %1152, i64 7584
  %1421 = load ptr, ptr %1420, align 32, !tbaa !59
  %1422 = getelementptr inbounds nuw i8, ptr %1152, i64 7624
  %1423 = load ptr, ptr %1422, align 8, !tbaa !73
  %1424 = getelementptr inbounds nuw i8, ptr %1152, i64 7632
  %1425 = load ptr, ptr %1424, align 16, !tbaa !74
  %1426 = getelementptr inbounds nuw i8, ptr %1152, i64 7640
  %1427 = load ptr, ptr %1426, align 8, !tbaa !75
  %1428 = getelementptr inbounds nuw i8, ptr %1152, i64 7608
  %1429 = load ptr, ptr %1428, align 8, !tbaa !76
  %1430 = getelementptr inbounds nuw i8, ptr %1152, i64 7616
  %1431 = load ptr, ptr %1430, align 64, !tbaa !77
  %1432 = icmp sgt i64 %1412, 0
  br i1 %1432, label %1433, label %1679

1433:                                             ; preds = %1405
  %1434 = load <8 x double>, ptr %1347, align 64, !tbaa !26
  %1435 = getelementptr inbounds nuw i8, ptr %1152, i64 2880
  %1436 = load <8 x double>, ptr %1435, align 64, !tbaa !26
  %1437 = getelementptr inbounds nuw i8, ptr %1152, i64 2816
  %1438 = load <8 x double>, ptr %1437, align 64, !tbaa !26
  %1439 = fmul <8 x double> %1281, splat (double -2.000000e+00)
  %1440 = fmul <8 x double> %1439, %1338
  %1441 = fmul <8 x double> %1338, %1440
  %1442 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1338, <8 x double> %1415, <8 x double> %1414)
  %1443 = fmul <8 x double> %1441, %1442
  %1444 = getelementptr inbounds nuw i8, ptr %1152, i64 7672
  %1445 = fmul <8 x double> %1335, %1436
  %1446 = fdiv <8 x double> %1438, %1407
  br label %1447

1447:                                             ; preds = %1433, %1531
  %1448 = phi <8 x double> [ %1434, %1433 ], [ %1535, %1531 ]
  %1449 = phi <8 x double> [ zeroinitializer, %1433 ], [ %1532, %1531 ]
  %1450 = phi <8 x double> [ zeroinitializer, %1433 ], [ %1533, %1531 ]
  %1451 = phi <8 x double> [ zeroinitializer, %1433 ], [ %1534, %1531 ]
  %1452 = phi <8 x double> [ zeroinitializer, %1433 ], [ %1561, %1531 ]
  %1453 = phi <8 x double> [ zeroinitializer, %1433 ], [ %1563, %1531 ]
  %1454 = phi <8 x double> [ %1409, %1433 ], [ %1536, %1531 ]
  %1455 = phi i64 [ 0, %1433 ], [ %1457, %1531 ]
  %1456 = phi <8 x double> [ zeroinitializer, %1433 ], [ %1537, %1531 ]
  %1457 = add nuw nsw i64 %1455, 1
  %1458 = icmp slt i64 %1457, %1412
  br i1 %1458, label %1459, label %1528

1459:                                             ; preds = %1447
  %1460 = getelementptr inbounds nuw <8 x double>, ptr %1347, i64 %1457
  %1461 = load <8 x double>, ptr %1460, align 64, !tbaa !26
  %1462 = icmp slt i64 %1457, %1296
  br i1 %1462, label %1470, label %1463

1463:                                             ; preds = %1459
  %1464 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1461, <8 x double> %1379, <8 x double> %1377)
  %1465 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1461, <8 x double> %1464, <8 x double> %1375)
  %1466 = fneg <8 x double> %1461
  %1467 = fmul <8 x double> %1461, %1466
  %1468 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1461, <8 x double> %1415, <8 x double> %1414)
  %1469 = fmul <8 x double> %1467, %1468
  br label %1470

1470:                                             ; preds = %1459, %1463
  %1471 = phi <8 x double> [ %1465, %1463 ], [ %1409, %1459 ]
  %1472 = phi <8 x double> [ %1469, %1463 ], [ zeroinitializer, %1459 ]
  %1473 = load i64, ptr %1295, align 64, !tbaa !31
  %1474 = icmp eq i64 %1473, 0
  %1475 = load ptr, ptr %1444, align 8, !tbaa !35
  br i1 %1474, label %1476, label %1480

1476:                                             ; preds = %1470
  %1477 = getelementptr inbounds nuw <8 x double>, ptr %1475, i64 %1457
  %1478 = load <8 x double>, ptr %1477, align 64, !tbaa !26
  %1479 = fmul <8 x double> %1334, %1478
  br label %1496

1480:                                             ; preds = %1470
  %1481 = shl nsw i64 %1457, 8
  %1482 = getelementptr inbounds nuw i8, ptr %1475, i64 %1481
  %1483 = load <8 x double>, ptr %1482, align 64, !tbaa !26
  %1484 = getelementptr inbounds nuw i8, ptr %1482, i64 64
  %1485 = load <8 x double>, ptr %1484, align 64, !tbaa !26
  %1486 = getelementptr inbounds nuw i8, ptr %1482, i64 128
  %1487 = load <8 x double>, ptr %1486, align 64, !tbaa !26
  %1488 = getelementptr inbounds nuw i8, ptr %1482, i64 192
  %1489 = load <8 x double>, ptr %1488, align 64, !tbaa !26
  %1490 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1489, <8 x double> %1487)
  %1491 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1490, <8 x double> %1485)
  %1492 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1246, <8 x double> %1491, <8 x double> %1483)
  %1493 = icmp slt i64 %1455, %1473
  %1494 = fmul <8 x double> %1334, %1492
  %1495 = select i1 %1493, <8 x double> %1492, <8 x double> %1494
  br label %1496

1496:                                             ; preds = %1480, %1476
  %1497 = phi <8 x double> [ %1479, %1476 ], [ %1495, %1480 ]
  %1498 = icmp slt i64 %1455, %1473
  br i1 %1498, label %1505, label %1499

1499:                                             ; preds = %1496
  %1500 = fadd <8 x double> %1448, %1461
  %1501 = fmul <8 x double> %1500, splat (double 5.000000e-01)
  %1502 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1501, <8 x double> %1359, <8 x double> %1357)
  %1503 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1501, <8 x double> %1502, <8 x double> %1355)
  %1504 = fmul <8 x double> %1503, %1497
  br label %1515

1505:                                             ; preds = %1496
  %1506 = icmp slt i64 %1457, %1473
  br i1 %1506, label %1507, label %1509

1507:                                             ; preds = %1505
  %1508 = fmul <8 x double> %1407, %1497
  br label %1515

1509:                                             ; preds = %1505
  %1510 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1461, <8 x double> %1359, <8 x double> %1357)
  %1511 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1461, <8 x double> %1510, <8 x double> %1355)
  %1512 = fdiv <8 x double> %1445, %1511
  %1513 = fadd <8 x double> %1446, %1512
  %1514 = fdiv <8 x double> %1497, %1513
  br label %1515

1515:                                             ; preds = %1499, %1507, %1509
  %1516 = phi <8 x double> [ %1504, %1499 ], [ %1508, %1507 ], [ %1514, %1509 ]
  br i1 %1462, label %1521, label %1517

1517:                                             ; preds = %1515
  %1518 = getelementptr inbounds nuw <8 x double>, ptr %1417, i64 %1457
  %1519 = load <8 x double>, ptr %1518, align 64, !tbaa !26
  %1520 = fmul <8 x double> %1281, %1519
  br label %1521

1521:                                             ; preds = %1515, %1517
  %1522 = phi <8 x double> [ %1520, %1517 ], [ zeroinitializer, %1515 ]
  %1523 = fneg <8 x double> %1522
  %1524 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1523, <8 x double> %1454, <8 x double> %1516)
  %1525 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1522, <8 x double> %1471, <8 x double> %1516)
  %1526 = fadd <8 x double> %1456, %1472
  %1527 = fmul <8 x double> %1526, %1522
  br label %1531

1528:                                             ; preds = %1447
  %1529 = load <8 x double>, ptr %1372, align 64, !tbaa !26
  %1530 = load <8 x double>, ptr %1383, align 64, !tbaa !26
  br label %1531

1531:                                             ; preds = %1528, %1521
  %1532 = phi <8 x double> [ %1524, %1521 ], [ %1529, %1528 ]
  %1533 = phi <8 x double> [ %1525, %1521 ], [ %1530, %1528 ]
  %1534 = phi <8 x double> [ %1527, %1521 ], [ %1443, %1528 ]
  %1535 = phi <8 x double> [ %1461, %1521 ], [ %1448, %1528 ]
  %1536 = phi <8 x double> [ %1471, %1521 ], [ %1454, %1528 ]
  %1537 = phi <8 x double> [ %1472, %1521 ], [ %1456, %1528 ]
  %1538 = getelementptr inbounds nuw <8 x double>, ptr %1419, i64 %1455
  %1539 = load <8 x double>, ptr %1538, align 64, !tbaa !26
  %1540 = icmp slt i64 %1455, %1296
  %1541 = select i1 %1540, <8 x double> %1411, <8 x double> %1413
  %1542 = fmul <8 x double> %1197, %1541
  %1543 = fmul <8 x double> %1542, %1539
  %1544 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1543, <8 x double> %1454, <8 x double> %1532)
  %1545 = fadd <8 x double> %1450, %1544
  %1546 = fsub <8 x double> %1534, %1451
  %1547 = fneg <8 x double> %1543
  %1548 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1547, <8 x double> %1456, <8 x double> %1546)
  %1549 = getelementptr inbounds nuw <8 x double>, ptr %1421, i64 %1455
  %1550 = load <8 x double>, ptr %1549, align 64, !tbaa !26
  %1551 = fsub <8 x double> %1548, %1550
  %1552 = fneg <8 x double> %1449
  %1553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1552, <8 x double> %1453, <8 x double> %1545)
  %1554 = fdiv <8 x double> splat (double 1.000000e+00), %1553
  %1555 = getelementptr inbounds nuw <8 x double>, ptr %1423, i64 %1455
  store <8 x double> %1551, ptr %1555, align 64, !tbaa !26
  %1556 = getelementptr inbounds nuw <8 x double>, ptr %1425, i64 %1455
  store <8 x double> %1449, ptr %1556, align 64, !tbaa !26
  %1557 = fadd <8 x double> %1449, %1533
  %1558 = fsub <8 x double> %1557, %1545
  %1559 = getelementptr inbounds nuw <8 x double>, ptr %1427, i64 %1455
  store <8 x double> %1558, ptr %1559, align 64, !tbaa !26
  %1560 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1449, <8 x double> %1452, <8 x double> %1551)
  %1561 = fmul <8 x double> %1560, %1554
  %1562 = getelementptr inbounds nuw <8 x double>, ptr %1429, i64 %1455
  store <8 x double> %1561, ptr %1562, align 64, !tbaa !26
  %1563 = fmul <8 x double> %1533, %1554
  %1564 = getelementptr inbounds nuw <8 x double>, ptr %1431, i64 %1455
  store <8 x double> %1563, ptr %1564, align 64, !tbaa !26
  %1565 = icmp eq i64 %1457, %1412
  br i1 %1565, label %1679, label %1447, !llvm.loop !78

1566:                                             ; preds = %1333
  %1567 = getelementptr inbounds nuw i8, ptr %1152, i64 1536
  %1568 = load <8 x double>, ptr %1567, align 64, !tbaa !26
  %1569 = load i64, ptr %141, align 16, !tbaa !21
  %1570 = fdiv <8 x double> %1293, %1246
  %1571 = fsub <8 x double> %1272, %1568
  %1572 = fmul <8 x double> %1197, %1571
  %1573 = fmul <8 x double> %1377, splat (double 5.000000e-01)
  %1574 = fmul <8 x double> %1379, splat (double 0x3FE5555555555555)
  %1575 = getelementptr inbounds nuw i8, ptr %1152, i64 7648
  %1576 = load ptr, ptr %1575, align 32, !tbaa !72
  %1577 = getelementptr inbounds nuw i8, ptr %1152, i64 7656
  %1578 = load ptr, ptr %1577, align 8, !tbaa !49
  %1579 = getelementptr inbounds nuw i8, ptr %1152, i64 7584
  %1580 = load ptr, ptr %1579, align 32, !tbaa !59
  %1581 = getelementptr inbounds nuw i8, ptr %1152, i64 7624
  %1582 = load ptr, ptr %1581, align 8, !tbaa !73
  %1583 = getelementptr inbounds nuw i8, ptr %1152, i64 7632
  %1584 = load ptr, ptr %1583, align 16, !tbaa !74
  %1585 = getelementptr inbounds nuw i8, ptr %1152, i64 7640
  %1586 = load ptr, ptr %1585, align 8, !tbaa !75
  %1587 = getelementptr inbounds nuw i8, ptr %1152, i64 7608
  %1588 = load ptr, ptr %1587, align 8, !tbaa !76
  %1589 = getelementptr inbounds nuw i8, ptr %1152, i64 7616
  %1590 = load ptr, ptr %1589, align 64, !tbaa !77
  %1591 = icmp sgt i64 %1569, 0
  br i1 %1591, label %1592, label %1679

1592:                                             ; preds = %1566
  %1593 = load <8 x double>, ptr %1347, align 64, !tbaa !26
  %1594 = fneg <8 x double> %1593
  %1595 = fmul <8 x double> %1593, %1594
  %1596 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1593, <8 x double> %1574, <8 x double> %1573)
  %1597 = fmul <8 x double> %1595, %1596
  %1598 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1593, <8 x double> %1379, <8 x double> %1377)
  %1599 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1593, <8 x double> %1598, <8 x double> %1375)
  %1600 = fmul <8 x double> %1281, splat (double -2.000000e+00)
  %1601 = fmul <8 x double> %1600, %1338
  %1602 = fmul <8 x double> %1338, %1601
  %1603 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1338, <8 x double> %1574, <8 x double> %1573)
  %1604 = fmul <8 x double> %1602, %1603
  %1605 = getelementptr inbounds nuw i8, ptr %1152, i64 7672
  br label %1606

1606:                                             ; preds = %1592, %1647
  %1607 = phi <8 x double> [ %1593, %1592 ], [ %1651, %1647 ]
  %1608 = phi <8 x double> [ zeroinitializer, %1592 ], [ %1648, %1647 ]
  %1609 = phi <8 x double> [ zeroinitializer, %1592 ], [ %1649, %1647 ]
  %1610 = phi <8 x double> [ zeroinitializer, %1592 ], [ %1650, %1647 ]
  %1611 = phi <8 x double> [ zeroinitializer, %1592 ], [ %1674, %1647 ]
  %1612 = phi <8 x double> [ zeroinitializer, %1592 ], [ %1676, %1647 ]
  %1613 = phi <8 x double> [ %1599, %1592 ], [ %1652, %1647 ]
  %1614 = phi i64 [ 0, %1592 ], [ %1616, %1647 ]
  %1615 = phi <8 x double> [ %1597, %1592 ], [ %1653, %1647 ]
  %1616 = add nuw nsw i64 %1614, 1
  %1617 = icmp slt i64 %1616, %1569
  br i1 %1617, label %1618, label %1644

1618:                                             ; preds = %1606
  %1619 = getelementptr inbounds nuw <8 x double>, ptr %1347, i64 %1616
  %1620 = load <8 x double>, ptr %1619, align 64, !tbaa !26
  %1621 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1620, <8 x double> %1379, <8 x double> %1377)
  %1622 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1620, <8 x double> %1621, <8 x double> %1375)
  %1623 = fneg <8 x double> %1620
  %1624 = fmul <8 x double> %1620, %1623
  %1625 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1620, <8 x double> %1574, <8 x double> %1573)
  %1626 = fmul <8 x double> %1624, %1625
  %1627 = fadd <8 x double> %1607, %1620
  %1628 = fmul <8 x double> %1627, splat (double 5.000000e-01)
  %1629 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1628, <8 x double> %1359, <8 x double> %1357)
  %1630 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1628, <8 x double> %1629, <8 x double> %1355)
  %1631 = load ptr, ptr %1605, align 8, !tbaa !35
  %1632 = getelementptr inbounds nuw <8 x double>, ptr %1631, i64 %1616
  %1633 = load <8 x double>, ptr %1632, align 64, !tbaa !26
  %1634 = fmul <8 x double> %1570, %1633
  %1635 = fmul <8 x double> %1634, %1630
  %1636 = getelementptr inbounds nuw <8 x double>, ptr %1576, i64 %1616
  %1637 = load <8 x double>, ptr %1636, align 64, !tbaa !26
  %1638 = fmul <8 x double> %1281, %1637
  %1639 = fneg <8 x double> %1638
  %1640 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1639, <8 x double> %1613, <8 x double> %1635)
  %1641 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1638, <8 x double> %1622, <8 x double> %1635)
  %1642 = fadd <8 x double> %1615, %1626
  %1643 = fmul <8 x double> %1642, %1638
  br label %1647

1644:                                             ; preds = %1606
  %1645 = load <8 x double>, ptr %1372, align 64, !tbaa !26
  %1646 = load <8 x double>, ptr %1383, align 64, !tbaa !26
  br label %1647

1647:                                             ; preds = %1644, %1618
  %1648 = phi <8 x double> [ %1640, %1618 ], [ %1645, %1644 ]
  %1649 = phi <8 x double> [ %1641, %1618 ], [ %1646, %1644 ]
  %1650 = phi <8 x double> [ %1643, %1618 ], [ %1604, %1644 ]
  %1651 = phi <8 x double> [ %1620, %1618 ], [ %1607, %1644 ]
  %1652 = phi <8 x double> [ %1622, %1618 ], [ %1613, %1644 ]
  %1653 = phi <8 x double> [ %1626, %1618 ], [ %1615, %1644 ]
  %1654 = getelementptr inbounds nuw <8 x double>, ptr %1578, i64 %1614
  %1655 = load <8 x double>, ptr %1654, align 64, !tbaa !26
  %1656 = fmul <8 x double> %1572, %1655
  %1657 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1656, <8 x double> %1613, <8 x double> %1648)
  %1658 = fadd <8 x double> %1609, %1657
  %1659 = fsub <8 x double> %1650, %1610
  %1660 = fneg <8 x double> %1656
  %1661 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1660, <8 x double> %1615, <8 x double> %1659)
  %1662 = getelementptr inbounds nuw <8 x double>, ptr %1580, i64 %1614
  %1663 = load <8 x double>, ptr %1662, align 64, !tbaa !26
  %1664 = fsub <8 x double> %1661, %1663
  %1665 = fneg <8 x double> %1608
  %1666 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1665, <8 x double> %1612, <8 x double> %1658)
  %1667 = fdiv <8 x double> splat (double 1.000000e+00), %1666
  %1668 = getelementptr inbounds nuw <8 x double>, ptr %1582, i64 %1614
  store <8 x double> %1664, ptr %1668, align 64, !tbaa !26
  %1669 = getelementptr inbounds nuw <8 x double>, ptr %1584, i64 %1614
  store <8 x double> %1608, ptr %1669, align 64, !tbaa !26
  %1670 = fadd <8 x double> %1608, %1649
  %1671 = fsub <8 x double> %1670, %1658
  %1672 = getelementptr inbounds nuw <8 x double>, ptr %1586, i64 %1614
  store <8 x double> %1671, ptr %1672, align 64, !tbaa !26
  %1673 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1608, <8 x double> %1611, <8 x double> %1664)
  %1674 = fmul <8 x double> %1673, %1667
  %1675 = getelementptr inbounds nuw <8 x double>, ptr %1588, i64 %1614
  store <8 x double> %1674, ptr %1675, align 64, !tbaa !26
  %1676 = fmul <8 x double> %1649, %1667
  %1677 = getelementptr inbounds nuw <8 x double>, ptr %1590, i64 %1614
  store <8 x double> %1676, ptr %1677, align 64, !tbaa !26
  %1678 = icmp eq i64 %1616, %1569
  br i1 %1678, label %1679, label %1606, !llvm.loop !79

1679:                                             ; preds = %1531, %1647, %1405, %1566
  %1680 = getelementptr inbounds nuw i8, ptr %1152, i64 7608
  %1681 = load ptr, ptr %1680, align 8, !tbaa !76
  %1682 = load i64, ptr %141, align 16, !tbaa !21
  %1683 = add nsw i64 %1682, -1
  %1684 = getelementptr inbounds <8 x double>, ptr %1681, i64 %1683
  %1685 = load <8 x double>, ptr %1684, align 64, !tbaa !26
  %1686 = getelementptr inbounds nuw i8, ptr %1152, i64 7616
  %1687 = load ptr, ptr %1686, align 64, !tbaa !77
  %1688 = getelementptr inbounds <8 x double>, ptr %1687, i64 %1683
  %1689 = load <8 x double>, ptr %1688, align 64, !tbaa !26
  %1690 = load <8 x double>, ptr %1372, align 64, !tbaa !26
  %1691 = fmul <8 x double> %1685, %1690
  %1692 = fsub <8 x double> splat (double 1.000000e+00), %1689
  %1693 = fmul <8 x double> %1690, %1692
  %1694 = load <8 x double>, ptr %1399, align 64, !tbaa !26
  %1695 = load <8 x double>, ptr %1205, align 64, !tbaa !26
  %1696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1694, <8 x double> %1695, <8 x double> %1691)
  %1697 = load <8 x double>, ptr %1244, align 64, !tbaa !26
  %1698 = fsub <8 x double> %1696, %1697
  %1699 = fadd <8 x double> %1693, %1694
  %1700 = load <8 x double>, ptr %1241, align 64, !tbaa !26
  %1701 = fadd <8 x double> %1699, %1700
  %1702 = load <8 x i64>, ptr %1233, align 64, !tbaa !26
  %1703 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1702)
  %1704 = icmp eq i64 %1703, 0
  %1705 = load i64, ptr %142, align 8, !tbaa !22
  br i1 %1704, label %1706, label %1721

1706:                                             ; preds = %1679
  %1707 = icmp slt i64 %1705, 0
  br i1 %1707, label %1712, label %1708

1708:                                             ; preds = %1706
  %1709 = getelementptr inbounds nuw i8, ptr %1152, i64 1408
  %1710 = getelementptr inbounds nuw i8, ptr %1152, i64 7728
  %1711 = load <8 x double>, ptr %1709, align 64, !tbaa !26
  br label %1714

1712:                                             ; preds = %1714, %1706
  %1713 = getelementptr inbounds nuw i8, ptr %1152, i64 5824
  store <8 x double> %1698, ptr %1713, align 64, !tbaa !26
  br label %1848

1714:                                             ; preds = %1708, %1714
  %1715 = phi i64 [ 0, %1708 ], [ %1718, %1714 ]
  %1716 = load ptr, ptr %1710, align 16, !tbaa !80
  %1717 = getelementptr inbounds nuw <8 x double>, ptr %1716, i64 %1715
  store <8 x double> %1711, ptr %1717, align 64, !tbaa !26
  %1718 = add nuw nsw i64 %1715, 1
  %1719 = load i64, ptr %142, align 8, !tbaa !22
  %1720 = icmp slt i64 %1715, %1719
  br i1 %1720, label %1714, label %1712, !llvm.loop !81

1721:                                             ; preds = %1679
  %1722 = load <8 x double>, ptr %1212, align 64, !tbaa !26
  %1723 = load <8 x double>, ptr %1261, align 64, !tbaa !26
  %1724 = getelementptr inbounds nuw i8, ptr %1152, i64 1280
  %1725 = load <8 x double>, ptr %1724, align 64, !tbaa !26
  %1726 = fmul <8 x double> %1723, %1725
  %1727 = load <8 x double>, ptr %1152, align 64, !tbaa !26
  %1728 = fsub <8 x double> %1727, %1722
  %1729 = sitofp i64 %1705 to double
  %1730 = insertelement <8 x double> poison, double %1729, i64 0
  %1731 = shufflevector <8 x double> %1730, <8 x double> poison, <8 x i32> zeroinitializer
  %1732 = fdiv <8 x double> %1728, %1731
  %1733 = load <8 x double>, ptr %1402, align 64, !tbaa !26
  %1734 = load <8 x double>, ptr %1404, align 64, !tbaa !26
  %1735 = getelementptr inbounds nuw i8, ptr %1152, i64 1408
  %1736 = load <8 x double>, ptr %1735, align 64, !tbaa !26
  %1737 = getelementptr inbounds nuw i8, ptr %1152, i64 7728
  %1738 = load ptr, ptr %1737, align 16, !tbaa !80
  %1739 = getelementptr inbounds <8 x double>, ptr %1738, i64 %1705
  store <8 x double> %1736, ptr %1739, align 64, !tbaa !26
  %1740 = icmp sgt i64 %1705, 0
  br i1 %1740, label %1741, label %1832

1741:                                             ; preds = %1721
  %1742 = fneg <8 x double> %1726
  %1743 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1742, <8 x double> %1734, <8 x double> %1733)
  %1744 = fsub <8 x double> splat (double 1.000000e+00), %1734
  %1745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1726, <8 x double> %1744, <8 x double> %1733)
  %1746 = getelementptr inbounds nuw i8, ptr %1152, i64 7736
  %1747 = getelementptr inbounds nuw i8, ptr %1152, i64 7744
  %1748 = getelementptr inbounds nuw i8, ptr %1152, i64 768
  %1749 = fmul <8 x double> %1726, splat (double -5.000000e-01)
  %1750 = getelementptr inbounds nuw i8, ptr %1152, i64 7704
  %1751 = getelementptr inbounds nuw i8, ptr %1152, i64 7712
  %1752 = getelementptr inbounds nuw i8, ptr %1152, i64 7720
  br label %1753

1753:                                             ; preds = %1741, %1807
  %1754 = phi <8 x double> [ %1745, %1741 ], [ %1809, %1807 ]
  %1755 = phi <8 x double> [ %1743, %1741 ], [ %1810, %1807 ]
  %1756 = phi <8 x double> [ %1695, %1741 ], [ %1825, %1807 ]
  %1757 = phi <8 x double> [ zeroinitializer, %1741 ], [ %1828, %1807 ]
  %1758 = phi <8 x double> [ %1736, %1741 ], [ %1771, %1807 ]
  %1759 = phi i64 [ %1705, %1741 ], [ %1760, %1807 ]
  %1760 = add nsw i64 %1759, -1
  %1761 = uitofp nneg i64 %1760 to double
  %1762 = insertelement <8 x double> poison, double %1761, i64 0
  %1763 = shufflevector <8 x double> %1762, <8 x double> poison, <8 x i32> zeroinitializer
  %1764 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1763, <8 x double> %1732, <8 x double> %1722)
  %1765 = load <8 x double>, ptr %1262, align 64, !tbaa !26
  %1766 = load <8 x double>, ptr %1264, align 64, !tbaa !26
  %1767 = load <8 x double>, ptr %1266, align 64, !tbaa !26
  %1768 = load <8 x double>, ptr %1268, align 64, !tbaa !26
  %1769 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1764, <8 x double> %1768, <8 x double> %1767)
  %1770 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1764, <8 x double> %1769, <8 x double> %1766)
  %1771 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1764, <8 x double> %1770, <8 x double> %1765)
  %1772 = load <8 x double>, ptr %1196, align 64, !tbaa !26
  %1773 = load <8 x double>, ptr %1182, align 64, !tbaa !26
  %1774 = load ptr, ptr %1746, align 8, !tbaa !50
  %1775 = getelementptr inbounds nuw <8 x double>, ptr %1774, i64 %1760
  %1776 = load <8 x double>, ptr %1775, align 64, !tbaa !26
  %1777 = fmul <8 x double> %1773, %1776
  %1778 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1772, <8 x double> %1771, <8 x double> %1777)
  %1779 = load <8 x double>, ptr %1186, align 64, !tbaa !26
  %1780 = load ptr, ptr %1747, align 64, !tbaa !60
  %1781 = getelementptr inbounds nuw <8 x double>, ptr %1780, i64 %1760
  %1782 = load <8 x double>, ptr %1781, align 64, !tbaa !26
  %1783 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1779, <8 x double> %1782, <8 x double> %1778)
  %1784 = fmul <8 x double> %1783, splat (double 5.000000e-01)
  %1785 = icmp eq i64 %1759, 1
  br i1 %1785, label %1801, label %1786

1786:                                             ; preds = %1753
  %1787 = load <8 x double>, ptr %1748, align 64, !tbaa !26
  %1788 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1784, <8 x double> %1787, <8 x double> %1749)
  %1789 = load <8 x double>, ptr %1345, align 64, !tbaa !26
  %1790 = fmul <8 x double> %1731, %1789
  %1791 = load <8 x double>, ptr %1283, align 64, !tbaa !26
  %1792 = load <8 x double>, ptr %1285, align 64, !tbaa !26
  %1793 = load <8 x double>, ptr %1287, align 64, !tbaa !26
  %1794 = load <8 x double>, ptr %1289, align 64, !tbaa !26
  %1795 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1764, <8 x double> %1794, <8 x double> %1793)
  %1796 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1764, <8 x double> %1795, <8 x double> %1792)
  %1797 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1764, <8 x double> %1796, <8 x double> %1791)
  %1798 = fmul <8 x double> %1790, %1797
  %1799 = fsub <8 x double> %1798, %1788
  %1800 = fadd <8 x double> %1788, %1798
  br label %1807

1801:                                             ; preds = %1753
  %1802 = load <8 x double>, ptr %1399, align 64, !tbaa !26
  %1803 = load <8 x double>, ptr %1748, align 64, !tbaa !26
  %1804 = fmul <8 x double> %1784, splat (double -2.000000e+00)
  %1805 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1804, <8 x double> %1803, <8 x double> %1802)
  %1806 = fadd <8 x double> %1726, %1805
  br label %1807

1807:                                             ; preds = %1801, %1786
  %1808 = phi <8 x double> [ %1787, %1786 ], [ %1803, %1801 ]
  %1809 = phi <8 x double> [ %1799, %1786 ], [ %1806, %1801 ]
  %1810 = phi <8 x double> [ %1800, %1786 ], [ %1802, %1801 ]
  %1811 = fsub <8 x double> %1758, %1771
  %1812 = fmul <8 x double> %1772, %1811
  %1813 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1812, <8 x double> %1808, <8 x double> %1754)
  %1814 = fadd <8 x double> %1810, %1813
  %1815 = fneg <8 x double> %1755
  %1816 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1815, <8 x double> %1757, <8 x double> %1814)
  %1817 = fdiv <8 x double> splat (double 1.000000e+00), %1816
  %1818 = load ptr, ptr %1737, align 16, !tbaa !80
  %1819 = getelementptr inbounds nuw <8 x double>, ptr %1818, i64 %1760
  store <8 x double> %1771, ptr %1819, align 64, !tbaa !26
  %1820 = load ptr, ptr %1750, align 8, !tbaa !63
  %1821 = getelementptr inbounds nuw <8 x double>, ptr %1820, i64 %1760
  %1822 = load <8 x double>, ptr %1821, align 64, !tbaa !26
  %1823 = fneg <8 x double> %1822
  %1824 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1755, <8 x double> %1756, <8 x double> %1823)
  %1825 = fmul <8 x double> %1817, %1824
  %1826 = load ptr, ptr %1751, align 32, !tbaa !82
  %1827 = getelementptr inbounds nuw <8 x double>, ptr %1826, i64 %1760
  store <8 x double> %1825, ptr %1827, align 64, !tbaa !26
  %1828 = fmul <8 x double> %1809, %1817
  %1829 = load ptr, ptr %1752, align 8, !tbaa !83
  %1830 = getelementptr inbounds nuw <8 x double>, ptr %1829, i64 %1760
  store <8 x double> %1828, ptr %1830, align 64, !tbaa !26
  %1831 = icmp samesign ugt i64 %1759, 1
  br i1 %1831, label %1753, label %1832, !llvm.loop !84

1832:                                             ; preds = %1807, %1721
  %1833 = load <8 x i64>, ptr %1233, align 64, !tbaa !26
  %1834 = load <8 x double>, ptr %1399, align 64, !tbaa !26
  %1835 = getelementptr inbounds nuw i8, ptr %1152, i64 7712
  %1836 = load ptr, ptr %1835, align 32, !tbaa !82
  %1837 = load <8 x double>, ptr %1836, align 64, !tbaa !26
  %1838 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1834, <8 x double> %1837, <8 x double> %1691)
  %1839 = icmp eq <8 x i64> %1833, zeroinitializer
  %1840 = select <8 x i1> %1839, <8 x double> %1698, <8 x double> %1838
  %1841 = getelementptr inbounds nuw i8, ptr %1152, i64 5824
  store <8 x double> %1840, ptr %1841, align 64, !tbaa !26
  %1842 = getelementptr inbounds nuw i8, ptr %1152, i64 7720
  %1843 = load ptr, ptr %1842, align 8, !tbaa !83
  %1844 = load <8 x double>, ptr %1843, align 64, !tbaa !26
  %1845 = fsub <8 x double> splat (double 1.000000e+00), %1844
  %1846 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1834, <8 x double> %1845, <8 x double> %1693)
  %1847 = select <8 x i1> %1839, <8 x double> %1701, <8 x double> %1846
  br label %1848

1848:                                             ; preds = %1712, %1832
  %1849 = phi <8 x double> [ %1701, %1712 ], [ %1847, %1832 ]
  %1850 = getelementptr inbounds nuw i8, ptr %1152, i64 5888
  store <8 x double> %1849, ptr %1850, align 64, !tbaa !26
  %1851 = add nuw nsw i64 %1150, 1
  %1852 = load i64, ptr %166, align 8, !tbaa !20
  %1853 = icmp slt i64 %1851, %1852
  br i1 %1853, label %1149, label %1146, !llvm.loop !85

1854:                                             ; preds = %1955, %1144, %1146
  %1855 = phi <8 x double> [ %1147, %1146 ], [ %1145, %1144 ], [ %1147, %1955 ]
  %1856 = phi i64 [ %1852, %1146 ], [ %1139, %1144 ], [ %1956, %1955 ]
  %1857 = fcmp ogt <8 x double> %1855, zeroinitializer
  %1858 = bitcast <8 x i1> %1857 to i8
  %1859 = icmp eq i8 %1858, 0
  br i1 %1859, label %2042, label %1959

1860:                                             ; preds = %1146, %1955
  %1861 = phi i64 [ %1956, %1955 ], [ %1852, %1146 ]
  %1862 = phi i64 [ %1957, %1955 ], [ 0, %1146 ]
  %1863 = load ptr, ptr %151, align 8, !tbaa !28
  %1864 = getelementptr inbounds nuw %struct.Piece, ptr %1863, i64 %1862
  %1865 = getelementptr inbounds nuw i8, ptr %1864, i64 7488
  %1866 = load <8 x i64>, ptr %1865, align 64, !tbaa !26
  %1867 = getelementptr inbounds nuw i8, ptr %1864, i64 2240
  %1868 = load <8 x double>, ptr %1867, align 64, !tbaa !26
  %1869 = fcmp ogt <8 x double> %1868, zeroinitializer
  %1870 = select <8 x i1> %1869, <8 x i64> %1866, <8 x i64> zeroinitializer
  %1871 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1870)
  %1872 = icmp eq i64 %1871, 0
  br i1 %1872, label %1955, label %1873

1873:                                             ; preds = %1860
  %1874 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %1875 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1874, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1876 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1874, <8 x double> %1875, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1877 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %1878 = getelementptr inbounds nuw i8, ptr %1864, i64 5824
  %1879 = load <8 x double>, ptr %1878, align 64, !tbaa !26
  %1880 = getelementptr inbounds nuw i8, ptr %1864, i64 5888
  %1881 = load <8 x double>, ptr %1880, align 64, !tbaa !26
  %1882 = fdiv <8 x double> %1879, %1881
  %1883 = fcmp olt <8 x double> %1882, %1874
  %1884 = select <8 x i1> %1883, <8 x double> %1882, <8 x double> %1874
  %1885 = getelementptr inbounds nuw i8, ptr %1864, i64 5568
  %1886 = load <8 x double>, ptr %1885, align 64, !tbaa !26
  %1887 = fcmp olt <8 x double> %1886, %1884
  %1888 = select <8 x i1> %1887, <8 x double> %1886, <8 x double> %1884
  %1889 = fneg <8 x double> %1881
  %1890 = getelementptr inbounds nuw i8, ptr %1864, i64 7104
  %1891 = load <8 x double>, ptr %1890, align 64, !tbaa !26
  br label %1895

1892:                                             ; preds = %1895
  %1893 = getelementptr inbounds nuw i8, ptr %1864, i64 5952
  store <8 x double> %1946, ptr %1893, align 64, !tbaa !26
  %1894 = load i64, ptr %166, align 8, !tbaa !20
  br label %1955

1895:                                             ; preds = %1873, %1895
  %1896 = phi <8 x i64> [ %1870, %1873 ], [ %1949, %1895 ]
  %1897 = phi i32 [ 0, %1873 ], [ %1950, %1895 ]
  %1898 = phi <8 x double> [ %1888, %1873 ], [ %1946, %1895 ]
  %1899 = fadd <8 x double> %1898, splat (double 2.731500e+02)
  %1900 = fcmp ogt <8 x double> %1898, zeroinitializer
  %1901 = select <8 x i1> %1900, <8 x double> %1898, <8 x double> zeroinitializer
  %1902 = fadd <8 x double> %1901, splat (double 2.731500e+02)
  %1903 = fadd <8 x double> %1902, splat (double 0xC08451671D164BD4)
  %1904 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %1903
  %1905 = fsub <8 x double> %1902, %1904
  %1906 = fadd <8 x double> %1905, splat (double 0x40923C3565924845)
  %1907 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1905, <8 x double> %1906, <8 x double> splat (double 0xC12619EA558539E6))
  %1908 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1905, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %1909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1905, <8 x double> %1908, <8 x double> splat (double 0xC148A99584203885))
  %1910 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1905, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %1911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1905, <8 x double> %1910, <8 x double> splat (double 0x4118B9E59F2691E5))
  %1912 = fmul <8 x double> %1911, splat (double 2.000000e+00)
  %1913 = fmul <8 x double> %1907, splat (double 4.000000e+00)
  %1914 = fneg <8 x double> %1911
  %1915 = fmul <8 x double> %1913, %1914
  %1916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1909, <8 x double> %1909, <8 x double> %1915)
  %1917 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1916)
  %1918 = fsub <8 x double> %1917, %1909
  %1919 = fdiv <8 x double> %1912, %1918
  %1920 = fmul <8 x double> %1919, %1919
  %1921 = fmul <8 x double> %1920, splat (double 1.000000e+06)
  %1922 = fmul <8 x double> %1920, %1921
  %1923 = fmul <8 x double> %1899, splat (double 4.615260e+02)
  %1924 = fdiv <8 x double> %1922, %1923
  %1925 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1889, <8 x double> %1898, <8 x double> %1879)
  %1926 = fsub <8 x double> %1924, %1877
  %1927 = fcmp ogt <8 x double> %1926, zeroinitializer
  %1928 = select <8 x i1> %1927, <8 x double> %1926, <8 x double> zeroinitializer
  %1929 = fmul <8 x double> %1876, %1928
  %1930 = fdiv <8 x double> %1929, %1891
  %1931 = fsub <8 x double> %1925, %1930
  %1932 = fmul <8 x double> %1876, %1924
  %1933 = fdiv <8 x double> %1876, %1923
  %1934 = fadd <8 x double> %1933, splat (double -1.000000e+00)
  %1935 = fmul <8 x double> %1934, %1932
  %1936 = fdiv <8 x double> %1935, %1899
  %1937 = fdiv <8 x double> %1936, %1891
  %1938 = fcmp ule <8 x double> %1924, %1877
  %1939 = select <8 x i1> %1938, <8 x double> zeroinitializer, <8 x double> %1937
  %1940 = fsub <8 x double> %1889, %1939
  %1941 = fdiv <8 x double> %1931, %1940
  %1942 = fsub <8 x double> %1898, %1941
  %1943 = fcmp olt <8 x double> %1942, %1884
  %1944 = select <8 x i1> %1943, <8 x double> %1942, <8 x double> %1884
  %1945 = icmp eq <8 x i64> %1896, zeroinitializer
  %1946 = select <8 x i1> %1945, <8 x double> %1898, <8 x double> %1944
  %1947 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1941)
  %1948 = fcmp oge <8 x double> %1947, splat (double 0x3EB0C6F7A0B5ED8D)
  %1949 = select <8 x i1> %1948, <8 x i64> %1896, <8 x i64> zeroinitializer
  %1950 = add nuw nsw i32 %1897, 1
  %1951 = icmp samesign ult i32 %1897, 7
  %1952 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1949)
  %1953 = icmp ne i64 %1952, 0
  %1954 = select i1 %1951, i1 %1953, i1 false
  br i1 %1954, label %1895, label %1892, !llvm.loop !86

1955:                                             ; preds = %1860, %1892
  %1956 = phi i64 [ %1861, %1860 ], [ %1894, %1892 ]
  %1957 = add nuw nsw i64 %1862, 1
  %1958 = icmp slt i64 %1957, %1956
  br i1 %1958, label %1860, label %1854, !llvm.loop !87

1959:                                             ; preds = %1854
  %1960 = sext <8 x i1> %1857 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %1960, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %1961 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %1962 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %1963 = fadd <8 x double> %1961, %1962
  store <8 x double> %1963, ptr %6, align 64, !tbaa !26
  %1964 = load ptr, ptr %184, align 8
  %1965 = load ptr, ptr %186, align 8
  %1966 = load ptr, ptr %187, align 8
  br label %1967

1967:                                             ; preds = %2037, %1959
  %1968 = phi i64 [ 0, %1959 ], [ %2038, %2037 ]
  %1969 = getelementptr inbounds nuw i64, ptr %4, i64 %1968
  %1970 = load i64, ptr %1969, align 8, !tbaa !30
  %1971 = icmp eq i64 %1970, 0
  br i1 %1971, label %2037, label %1972

1972:                                             ; preds = %1967
  %1973 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %1968
  %1974 = load i64, ptr %1973, align 8, !tbaa !30
  %1975 = shl nsw i64 %1974, 1
  %1976 = or disjoint i64 %1975, 1
  %1977 = getelementptr inbounds i64, ptr %1964, i64 %1976
  %1978 = load i64, ptr %1977, align 8, !tbaa !30
  %1979 = shl nuw nsw i64 %1968, 1
  %1980 = or disjoint i64 %1979, 1
  %1981 = getelementptr inbounds nuw [16 x i64], ptr %185, i64 0, i64 %1980
  %1982 = getelementptr inbounds i64, ptr %1966, i64 %1976
  %1983 = load i64, ptr %1982, align 8, !tbaa !30
  %1984 = shl nsw i64 %1983, 4
  %1985 = getelementptr inbounds i8, ptr %1965, i64 %1984
  %1986 = getelementptr inbounds nuw double, ptr %6, i64 %1968
  %1987 = load double, ptr %1986, align 8, !tbaa !43
  %1988 = load i64, ptr %1981, align 8, !tbaa !30
  %1989 = getelementptr i8, ptr %1985, i64 -16
  %1990 = icmp sgt i64 %1988, 0
  br i1 %1990, label %1991, label %2000

1991:                                             ; preds = %1972, %1997
  %1992 = phi i64 [ %1998, %1997 ], [ %1988, %1972 ]
  %1993 = shl i64 %1992, 4
  %1994 = getelementptr i8, ptr %1989, i64 %1993
  %1995 = load double, ptr %1994, align 8, !tbaa !43
  %1996 = fcmp ugt double %1987, %1995
  br i1 %1996, label %2000, label %1997

1997:                                             ; preds = %1991
  %1998 = add nsw i64 %1992, -1
  store i64 %1998, ptr %1981, align 8, !tbaa !30
  %1999 = icmp sgt i64 %1992, 1
  br i1 %1999, label %1991, label %2000, !llvm.loop !69

2000:                                             ; preds = %1997, %1991, %1972
  %2001 = phi i64 [ %1988, %1972 ], [ 0, %1997 ], [ %1992, %1991 ]
  %2002 = icmp slt i64 %2001, %1978
  br i1 %2002, label %2003, label %2012

2003:                                             ; preds = %2000, %2009
  %2004 = phi i64 [ %2010, %2009 ], [ %2001, %2000 ]
  %2005 = shl nsw i64 %2004, 4
  %2006 = getelementptr inbounds i8, ptr %1985, i64 %2005
  %2007 = load double, ptr %2006, align 8, !tbaa !43
  %2008 = fcmp ule double %1987, %2007
  br i1 %2008, label %2017, label %2009

2009:                                             ; preds = %2003
  %2010 = add i64 %2004, 1
  store i64 %2010, ptr %1981, align 8, !tbaa !30
  %2011 = icmp eq i64 %2010, %1978
  br i1 %2011, label %2012, label %2003, !llvm.loop !70

2012:                                             ; preds = %2009, %2000
  %2013 = shl i64 %1978, 4
  %2014 = getelementptr i8, ptr %1985, i64 %2013
  %2015 = getelementptr i8, ptr %2014, i64 -8
  %2016 = load double, ptr %2015, align 8, !tbaa !43
  br label %2034

2017:                                             ; preds = %2003
  %2018 = shl nsw i64 %2004, 1
  %2019 = or disjoint i64 %2018, 1
  %2020 = getelementptr inbounds double, ptr %1985, i64 %2019
  %2021 = load double, ptr %2020, align 8, !tbaa !43
  %2022 = icmp sgt i64 %2004, 0
  br i1 %2022, label %2023, label %2034

2023:                                             ; preds = %2017
  %2024 = getelementptr inbounds nuw i8, ptr %1985, i64 %2005
  %2025 = getelementptr i8, ptr %2024, i64 -8
  %2026 = load double, ptr %2025, align 8, !tbaa !43
  %2027 = getelementptr i8, ptr %2024, i64 -16
  %2028 = load double, ptr %2027, align 8, !tbaa !43
  %2029 = fsub double %1987, %2028
  %2030 = fsub double %2007, %2028
  %2031 = fdiv double %2029, %2030
  %2032 = fsub double %2021, %2026
  %2033 = tail call double @llvm.fmuladd.f64(double %2031, double %2032, double %2026)
  br label %2034

2034:                                             ; preds = %2023, %2017, %2012
  %2035 = phi double [ %2033, %2023 ], [ %2021, %2017 ], [ %2016, %2012 ]
  %2036 = getelementptr inbounds nuw double, ptr %5, i64 %1968
  store double %2035, ptr %2036, align 8, !tbaa !43
  br label %2037

2037:                                             ; preds = %2034, %1967
  %2038 = add nuw nsw i64 %1968, 1
  %2039 = icmp eq i64 %2038, 8
  br i1 %2039, label %2040, label %1967, !llvm.loop !71

2040:                                             ; preds = %2037
  %2041 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2042

2042:                                             ; preds = %1854, %2040
  %2043 = phi <8 x double> [ %2041, %2040 ], [ zeroinitializer, %1854 ]
  %2044 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %2045 = fcmp ogt <8 x double> %2044, zeroinitializer
  %2046 = sext <8 x i1> %2045 to <8 x i64>
  %2047 = xor <8 x i64> %2046, splat (i64 -1)
  %2048 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2049 = fcmp oeq <8 x double> %2048, splat (double 1.000000e+00)
  %2050 = fcmp oeq <8 x double> %2048, splat (double 2.000000e+00)
  %2051 = or <8 x i1> %2049, %2050
  %2052 = select <8 x i1> %2051, <8 x i64> %2047, <8 x i64> zeroinitializer
  %2053 = xor <8 x i64> %2052, %2046
  %2054 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %2055 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2056 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %2057 = icmp eq <8 x i64> %2053, splat (i64 -1)
  %2058 = select <8 x i1> %2057, <8 x double> %2056, <8 x double> %2055
  %2059 = bitcast <8 x i1> %2045 to i8
  %2060 = icmp eq i8 %2059, 0
  br i1 %2060, label %2092, label %2061

2061:                                             ; preds = %2042
  %2062 = select <8 x i1> %2045, <8 x double> %2043, <8 x double> %2058
  %2063 = fmul <8 x double> %2062, splat (double 0x3EB0C6F7A0B5ED8D)
  %2064 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2063)
  %2065 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2064)
  %2066 = fmul <8 x double> %2065, %2065
  %2067 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2065, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2066)
  %2068 = fadd <8 x double> %2067, splat (double 0x402DD4891DBECC6B)
  %2069 = fmul <8 x double> %2065, splat (double 0x40C77A698FD9BCCA)
  %2070 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2066, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2069)
  %2071 = fadd <8 x double> %2070, splat (double 0xC0B2D7440748F0B3)
  %2072 = fmul <8 x double> %2065, splat (double 0xC148A99584203885)
  %2073 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2066, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2072)
  %2074 = fadd <8 x double> %2073, splat (double 0x4118B9E59F2691E5)
  %2075 = fmul <8 x double> %2074, splat (double 2.000000e+00)
  %2076 = fneg <8 x double> %2071
  %2077 = fmul <8 x double> %2068, splat (double 4.000000e+00)
  %2078 = fneg <8 x double> %2074
  %2079 = fmul <8 x double> %2077, %2078
  %2080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2071, <8 x double> %2071, <8 x double> %2079)
  %2081 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2080)
  %2082 = fsub <8 x double> %2076, %2081
  %2083 = fdiv <8 x double> %2075, %2082
  %2084 = fadd <8 x double> %2083, splat (double 0x408451671D164BD4)
  %2085 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2083, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2086 = fmul <8 x double> %2085, splat (double -4.000000e+00)
  %2087 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2084, <8 x double> %2084, <8 x double> %2086)
  %2088 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2087)
  %2089 = fsub <8 x double> %2084, %2088
  %2090 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2089, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2091 = select <8 x i1> %2045, <8 x double> %2090, <8 x double> %2054
  br label %2092

2092:                                             ; preds = %2061, %2042
  %2093 = phi <8 x double> [ %2062, %2061 ], [ %2058, %2042 ]
  %2094 = phi <8 x double> [ %2091, %2061 ], [ %2054, %2042 ]
  %2095 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2096 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2097 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %2098 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2099 = fmul <8 x double> %2097, %2098
  %2100 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2095, <8 x double> %2096, <8 x double> %2099)
  %2101 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %2102 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2103 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2104 = fneg <8 x double> %2100
  %2105 = fmul <8 x double> %2103, %2104
  %2106 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2101, <8 x double> %2102, <8 x double> %2105)
  %2107 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2108 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2103, <8 x double> %2107, <8 x double> %2101)
  %2109 = fdiv <8 x double> %2106, %2108
  %2110 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2111 = select <8 x i1> %2057, <8 x double> %2110, <8 x double> %2055
  store <8 x double> %2111, ptr %202, align 64, !tbaa !26
  %2112 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %2113 = select <8 x i1> %2057, <8 x double> %2112, <8 x double> %2109
  store <8 x double> %2113, ptr %203, align 64, !tbaa !26
  store <8 x double> %2093, ptr %196, align 64, !tbaa !26
  %2114 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %2115 = and <8 x i64> %2114, %2052
  %2116 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2115)
  %2117 = icmp eq i64 %2116, 0
  br i1 %2117, label %2584, label %2118

2118:                                             ; preds = %2092
  %2119 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %2120 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2121 = fmul <8 x double> %2097, %2120
  %2122 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2095, <8 x double> %2119, <8 x double> %2121)
  %2123 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2124 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2125 = fdiv <8 x double> %2123, %2124
  %2126 = fmul <8 x double> %2055, splat (double 3.000000e-01)
  %2127 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %2128 = fadd <8 x double> %2055, %2127
  %2129 = fadd <8 x double> %2128, splat (double 2.000000e+05)
  %2130 = fmul <8 x double> %2124, splat (double 2.870530e+02)
  %2131 = fdiv <8 x double> %2055, %2130
  %2132 = fcmp ogt <8 x double> %2093, %2126
  %2133 = select <8 x i1> %2132, <8 x double> %2093, <8 x double> %2126
  %2134 = fcmp olt <8 x double> %2133, %2129
  %2135 = select <8 x i1> %2134, <8 x double> %2133, <8 x double> %2129
  %2136 = icmp eq <8 x i64> %2052, zeroinitializer
  %2137 = select <8 x i1> %2136, <8 x double> %2093, <8 x double> %2135
  %2138 = fdiv <8 x double> %2111, splat (double 2.870530e+02)
  %2139 = fmul <8 x double> %2131, splat (double 2.000000e+00)
  %2140 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2139)
  br label %2141

2141:                                             ; preds = %2370, %2118
  %2142 = phi <8 x double> [ %2094, %2118 ], [ %2176, %2370 ]
  %2143 = phi <8 x double> [ %2126, %2118 ], [ %2527, %2370 ]
  %2144 = phi <8 x double> [ %2129, %2118 ], [ %2524, %2370 ]
  %2145 = phi <8 x i64> [ %2115, %2118 ], [ %2539, %2370 ]
  %2146 = phi i32 [ 0, %2118 ], [ %2544, %2370 ]
  %2147 = phi <8 x double> [ %2137, %2118 ], [ %2541, %2370 ]
  %2148 = fmul <8 x double> %2147, splat (double 0x3EB0C6F7A0B5ED8D)
  %2149 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2148)
  %2150 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2149)
  %2151 = fmul <8 x double> %2150, %2150
  %2152 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2150, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2151)
  %2153 = fadd <8 x double> %2152, splat (double 0x402DD4891DBECC6B)
  %2154 = fmul <8 x double> %2150, splat (double 0x40C77A698FD9BCCA)
  %2155 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2151, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2154)
  %2156 = fadd <8 x double> %2155, splat (double 0xC0B2D7440748F0B3)
  %2157 = fmul <8 x double> %2150, splat (double 0xC148A99584203885)
  %2158 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2151, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2157)
  %2159 = fadd <8 x double> %2158, splat (double 0x4118B9E59F2691E5)
  %2160 = fmul <8 x double> %2159, splat (double 2.000000e+00)
  %2161 = fneg <8 x double> %2156
  %2162 = fmul <8 x double> %2153, splat (double 4.000000e+00)
  %2163 = fneg <8 x double> %2159
  %2164 = fmul <8 x double> %2162, %2163
  %2165 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2156, <8 x double> %2156, <8 x double> %2164)
  %2166 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2165)
  %2167 = fsub <8 x double> %2161, %2166
  %2168 = fdiv <8 x double> %2160, %2167
  %2169 = fadd <8 x double> %2168, splat (double 0x408451671D164BD4)
  %2170 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2168, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2171 = fmul <8 x double> %2170, splat (double -4.000000e+00)
  %2172 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2169, <8 x double> %2169, <8 x double> %2171)
  %2173 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2172)
  %2174 = fsub <8 x double> %2169, %2173
  %2175 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2174, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2176 = select <8 x i1> %2136, <8 x double> %2142, <8 x double> %2175
  %2177 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2176, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2178 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2176, <8 x double> %2177, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2179 = load i64, ptr %166, align 8, !tbaa !20, !noalias !88
  %2180 = icmp sgt i64 %2179, 0
  br i1 %2180, label %2181, label %2370

2181:                                             ; preds = %2141
  %2182 = fdiv <8 x double> splat (double 1.000000e+00), %2178
  %2183 = fadd <8 x double> %2176, splat (double 1.000000e-09)
  br label %2184

2184:                                             ; preds = %2181, %2294
  %2185 = phi <8 x double> [ zeroinitializer, %2181 ], [ %2366, %2294 ]
  %2186 = phi <8 x double> [ zeroinitializer, %2181 ], [ %2365, %2294 ]
  %2187 = phi i64 [ 0, %2181 ], [ %2367, %2294 ]
  %2188 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !88
  %2189 = getelementptr inbounds nuw %struct.Piece, ptr %2188, i64 %2187
  %2190 = getelementptr inbounds nuw i8, ptr %2189, i64 5824
  %2191 = load <8 x double>, ptr %2190, align 64, !tbaa !26, !noalias !88
  %2192 = getelementptr inbounds nuw i8, ptr %2189, i64 5888
  %2193 = load <8 x double>, ptr %2192, align 64, !tbaa !26, !noalias !88
  %2194 = getelementptr inbounds nuw i8, ptr %2189, i64 7296
  %2195 = load <8 x double>, ptr %2194, align 64, !tbaa !26, !noalias !88
  %2196 = fcmp ule <8 x double> %2195, splat (double 1.000000e+00)
  %2197 = fmul <8 x double> %2176, %2193
  %2198 = fcmp ogt <8 x double> %2191, %2197
  %2199 = and <8 x i1> %2196, %2198
  %2200 = fneg <8 x double> %2193
  %2201 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2200, <8 x double> %2176, <8 x double> %2191)
  %2202 = fmul <8 x double> %2182, %2201
  %2203 = select <8 x i1> %2199, <8 x double> %2202, <8 x double> zeroinitializer
  %2204 = fmul <8 x double> %2182, %2200
  %2205 = fdiv <8 x double> %2191, %2193
  %2206 = select <8 x i1> %2199, <8 x double> %2176, <8 x double> %2205
  %2207 = getelementptr inbounds nuw i8, ptr %2189, i64 7488
  %2208 = load <8 x i64>, ptr %2207, align 64, !tbaa !26, !noalias !88
  %2209 = getelementptr inbounds nuw i8, ptr %2189, i64 2240
  %2210 = load <8 x double>, ptr %2209, align 64, !tbaa !26, !noalias !88
  %2211 = fcmp ule <8 x double> %2210, zeroinitializer
  %2212 = xor <8 x i1> %2196, splat (i1 true)
  %2213 = select <8 x i1> %2212, <8 x i1> splat (i1 true), <8 x i1> %2211
  %2214 = getelementptr inbounds nuw i8, ptr %2189, i64 5952
  %2215 = load <8 x double>, ptr %2214, align 64, !tbaa !26, !noalias !88
  %2216 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2200, <8 x double> %2215, <8 x double> %2191)
  %2217 = fcmp ogt <8 x double> %2216, zeroinitializer
  %2218 = select <8 x i1> %2217, <8 x double> %2216, <8 x double> zeroinitializer
  %2219 = fmul <8 x double> %2182, %2218
  %2220 = icmp eq <8 x i64> %2208, zeroinitializer
  %2221 = select <8 x i1> %2213, <8 x i1> splat (i1 true), <8 x i1> %2220
  %2222 = select <8 x i1> %2221, <8 x double> %2203, <8 x double> %2219
  %2223 = select <8 x i1> %2221, <8 x double> %2206, <8 x double> %2215
  %2224 = select <8 x i1> %2221, <8 x i1> %2199, <8 x i1> zeroinitializer
  %2225 = select <8 x i1> %2224, <8 x double> %2204, <8 x double> zeroinitializer
  %2226 = load i64, ptr %141, align 16, !tbaa !21, !noalias !91
  %2227 = sitofp i64 %2226 to double
  %2228 = insertelement <8 x double> poison, double %2227, i64 0
  %2229 = shufflevector <8 x double> %2228, <8 x double> poison, <8 x i32> zeroinitializer
  %2230 = icmp sgt i64 %2226, 0
  br i1 %2230, label %2231, label %2294

2231:                                             ; preds = %2184
  %2232 = getelementptr inbounds nuw i8, ptr %2189, i64 7608
  %2233 = load ptr, ptr %2232, align 8, !tbaa !76, !noalias !91
  %2234 = getelementptr inbounds nuw i8, ptr %2189, i64 7616
  %2235 = load ptr, ptr %2234, align 64, !tbaa !77, !noalias !91
  %2236 = getelementptr inbounds nuw i8, ptr %2189, i64 7552
  %2237 = load i64, ptr %2236, align 64, !tbaa !31, !noalias !91
  %2238 = getelementptr inbounds nuw i8, ptr %2189, i64 7632
  %2239 = getelementptr inbounds nuw i8, ptr %2189, i64 7624
  %2240 = getelementptr inbounds nuw i8, ptr %2189, i64 7640
  br label %2241

2241:                                             ; preds = %2231, %2276
  %2242 = phi <8 x i64> [ splat (i64 -1), %2231 ], [ %2256, %2276 ]
  %2243 = phi i64 [ %2226, %2231 ], [ %2247, %2276 ]
  %2244 = phi <8 x double> [ %2229, %2231 ], [ %2292, %2276 ]
  %2245 = phi <8 x double> [ zeroinitializer, %2231 ], [ %2288, %2276 ]
  %2246 = phi <8 x double> [ zeroinitializer, %2231 ], [ %2286, %2276 ]
  %2247 = add nsw i64 %2243, -1
  %2248 = getelementptr inbounds nuw <8 x double>, ptr %2233, i64 %2247
  %2249 = load <8 x double>, ptr %2248, align 64, !tbaa !26, !noalias !91
  %2250 = getelementptr inbounds nuw <8 x double>, ptr %2235, i64 %2247
  %2251 = load <8 x double>, ptr %2250, align 64, !tbaa !26, !noalias !91
  %2252 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2251, <8 x double> %2176, <8 x double> %2249)
  %2253 = fcmp ogt <8 x double> %2252, %2183
  %2254 = select <8 x i1> %2253, <8 x i64> %2242, <8 x i64> zeroinitializer
  %2255 = icmp sgt i64 %2243, %2237
  %2256 = select i1 %2255, <8 x i64> %2254, <8 x i64> zeroinitializer
  %2257 = icmp slt i64 %2243, %2226
  br i1 %2257, label %2258, label %2271

2258:                                             ; preds = %2241
  %2259 = load ptr, ptr %2238, align 16, !tbaa !74, !noalias !91
  %2260 = getelementptr inbounds nuw <8 x double>, ptr %2259, i64 %2243
  %2261 = load <8 x double>, ptr %2260, align 64, !tbaa !26, !noalias !91
  %2262 = fsub <8 x double> %2252, %2176
  %2263 = fmul <8 x double> %2262, %2261
  %2264 = icmp eq <8 x i64> %2256, %2242
  %2265 = select <8 x i1> %2264, <8 x double> zeroinitializer, <8 x double> %2263
  %2266 = fadd <8 x double> %2246, %2265
  %2267 = fadd <8 x double> %2251, splat (double -1.000000e+00)
  %2268 = fmul <8 x double> %2267, %2261
  %2269 = select <8 x i1> %2264, <8 x double> zeroinitializer, <8 x double> %2268
  %2270 = fadd <8 x double> %2245, %2269
  br label %2271

2271:                                             ; preds = %2258, %2241
  %2272 = phi <8 x double> [ %2266, %2258 ], [ %2246, %2241 ]
  %2273 = phi <8 x double> [ %2270, %2258 ], [ %2245, %2241 ]
  %2274 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2256)
  %2275 = icmp eq i64 %2274, 0
  br i1 %2275, label %2294, label %2276

2276:                                             ; preds = %2271
  %2277 = load ptr, ptr %2239, align 8, !tbaa !73, !noalias !91
  %2278 = getelementptr inbounds nuw <8 x double>, ptr %2277, i64 %2247
  %2279 = load <8 x double>, ptr %2278, align 64, !tbaa !26, !noalias !91
  %2280 = load ptr, ptr %2240, align 8, !tbaa !75, !noalias !91
  %2281 = getelementptr inbounds nuw <8 x double>, ptr %2280, i64 %2247
  %2282 = load <8 x double>, ptr %2281, align 64, !tbaa !26, !noalias !91
  %2283 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2282, <8 x double> %2176, <8 x double> %2279)
  %2284 = icmp eq <8 x i64> %2256, zeroinitializer
  %2285 = select <8 x i1> %2284, <8 x double> zeroinitializer, <8 x double> %2283
  %2286 = fadd <8 x double> %2272, %2285
  %2287 = select <8 x i1> %2284, <8 x double> zeroinitializer, <8 x double> %2282
  %2288 = fadd <8 x double> %2273, %2287
  %2289 = uitofp nneg i64 %2247 to double
  %2290 = insertelement <8 x double> poison, double %2289, i64 0
  %2291 = shufflevector <8 x double> %2290, <8 x double> poison, <8 x i32> zeroinitializer
  %2292 = select <8 x i1> %2284, <8 x double> %2244, <8 x double> %2291
  %2293 = icmp samesign ugt i64 %2243, 1
  br i1 %2293, label %2241, label %2294, !llvm.loop !94

2294:                                             ; preds = %2276, %2271, %2184
  %2295 = phi <8 x double> [ %2229, %2184 ], [ %2244, %2271 ], [ %2292, %2276 ]
  %2296 = phi <8 x double> [ zeroinitializer, %2184 ], [ %2272, %2271 ], [ %2286, %2276 ]
  %2297 = phi <8 x double> [ zeroinitializer, %2184 ], [ %2273, %2271 ], [ %2288, %2276 ]
  %2298 = getelementptr inbounds nuw i8, ptr %2189, i64 6080
  %2299 = load <8 x double>, ptr %2298, align 64, !tbaa !26, !noalias !88
  %2300 = getelementptr inbounds nuw i8, ptr %2189, i64 5504
  %2301 = load <8 x double>, ptr %2300, align 64, !tbaa !26, !noalias !88
  %2302 = getelementptr inbounds nuw i8, ptr %2189, i64 7040
  %2303 = load <8 x double>, ptr %2302, align 64, !tbaa !26, !noalias !88
  %2304 = fneg <8 x double> %2303
  %2305 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2299, <8 x double> %2301, <8 x double> %2304)
  %2306 = getelementptr inbounds nuw i8, ptr %2189, i64 6976
  %2307 = load <8 x double>, ptr %2306, align 64, !tbaa !26, !noalias !88
  %2308 = fadd <8 x double> %2299, %2307
  %2309 = getelementptr inbounds nuw i8, ptr %2189, i64 7360
  %2310 = load <8 x i64>, ptr %2309, align 64, !tbaa !26, !noalias !88
  %2311 = getelementptr inbounds nuw i8, ptr %2189, i64 7712
  %2312 = load ptr, ptr %2311, align 32, !tbaa !82, !noalias !88
  %2313 = load <8 x double>, ptr %2312, align 64, !tbaa !26, !noalias !88
  %2314 = fmul <8 x double> %2299, %2313
  %2315 = icmp eq <8 x i64> %2310, zeroinitializer
  %2316 = select <8 x i1> %2315, <8 x double> %2305, <8 x double> %2314
  %2317 = getelementptr inbounds nuw i8, ptr %2189, i64 7720
  %2318 = load ptr, ptr %2317, align 8, !tbaa !83, !noalias !88
  %2319 = load <8 x double>, ptr %2318, align 64, !tbaa !26, !noalias !88
  %2320 = fsub <8 x double> splat (double 1.000000e+00), %2319
  %2321 = fmul <8 x double> %2299, %2320
  %2322 = select <8 x i1> %2315, <8 x double> %2308, <8 x double> %2321
  %2323 = fneg <8 x double> %2322
  %2324 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2323, <8 x double> %2176, <8 x double> %2316)
  %2325 = fcmp olt <8 x double> %2295, %2229
  %2326 = and <8 x i1> %2196, %2325
  %2327 = fcmp ogt <8 x double> %2296, zeroinitializer
  %2328 = fcmp oge <8 x double> %2324, zeroinitializer
  %2329 = and <8 x i1> %2327, %2328
  %2330 = and <8 x i1> %2326, %2329
  %2331 = sext <8 x i1> %2330 to <8 x i64>
  %2332 = xor <8 x i64> %2331, splat (i64 -1)
  %2333 = fadd <8 x double> %2296, %2324
  %2334 = fcmp ogt <8 x double> %2333, zeroinitializer
  %2335 = select <8 x i1> %2334, <8 x i1> %2326, <8 x i1> zeroinitializer
  %2336 = select <8 x i1> %2335, <8 x i64> %2332, <8 x i64> zeroinitializer
  %2337 = or <8 x i64> %2336, %2331
  %2338 = fmul <8 x double> %2182, %2324
  %2339 = select <8 x i1> %2330, <8 x double> %2338, <8 x double> zeroinitializer
  %2340 = icmp eq <8 x i64> %2337, zeroinitializer
  %2341 = select <8 x i1> %2340, <8 x double> %2222, <8 x double> %2339
  %2342 = select <8 x i1> %2340, <8 x double> %2223, <8 x double> %2176
  %2343 = fsub <8 x double> %2297, %2322
  %2344 = fmul <8 x double> %2182, %2343
  %2345 = select <8 x i1> %2340, <8 x double> %2225, <8 x double> %2344
  %2346 = getelementptr inbounds nuw i8, ptr %2189, i64 5632
  store <8 x double> %2341, ptr %2346, align 64, !tbaa !26, !noalias !88
  %2347 = getelementptr inbounds nuw i8, ptr %2189, i64 5568
  store <8 x double> %2342, ptr %2347, align 64, !tbaa !26, !noalias !88
  %2348 = fmul <8 x double> %2182, %2296
  %2349 = fmul <8 x double> %2182, %2333
  %2350 = icmp eq <8 x i64> %2336, zeroinitializer
  %2351 = select <8 x i1> %2350, <8 x double> zeroinitializer, <8 x double> %2349
  %2352 = select <8 x i1> %2330, <8 x double> %2348, <8 x double> %2351
  %2353 = getelementptr inbounds nuw i8, ptr %2189, i64 5696
  store <8 x double> %2352, ptr %2353, align 64, !tbaa !26, !noalias !88
  %2354 = load i64, ptr %141, align 16, !tbaa !21, !noalias !88
  %2355 = sitofp i64 %2354 to double
  %2356 = insertelement <8 x double> poison, double %2355, i64 0
  %2357 = shufflevector <8 x double> %2356, <8 x double> poison, <8 x i32> zeroinitializer
  %2358 = select <8 x i1> %2340, <8 x double> %2357, <8 x double> %2295
  %2359 = getelementptr inbounds nuw i8, ptr %2189, i64 5760
  store <8 x double> %2358, ptr %2359, align 64, !tbaa !26, !noalias !88
  %2360 = getelementptr inbounds nuw i8, ptr %2189, i64 128
  %2361 = load <8 x double>, ptr %2360, align 64, !tbaa !26, !noalias !88
  %2362 = fadd <8 x double> %2341, %2352
  %2363 = fmul <8 x double> %2361, %2362
  %2364 = fmul <8 x double> %2361, %2345
  %2365 = fadd <8 x double> %2186, %2363
  %2366 = fadd <8 x double> %2185, %2364
  %2367 = add nuw nsw i64 %2187, 1
  %2368 = load i64, ptr %166, align 8, !tbaa !20, !noalias !88
  %2369 = icmp slt i64 %2367, %2368
  br i1 %2369, label %2184, label %2370, !llvm.loop !95

2370:                                             ; preds = %2294, %2141
  %2371 = phi <8 x double> [ zeroinitializer, %2141 ], [ %2365, %2294 ]
  %2372 = phi <8 x double> [ zeroinitializer, %2141 ], [ %2366, %2294 ]
  %2373 = fsub <8 x double> %2147, %2111
  %2374 = fcmp ogt <8 x double> %2373, zeroinitializer
  %2375 = select <8 x i1> %2374, <8 x double> %2373, <8 x double> zeroinitializer
  %2376 = fadd <8 x double> %2176, splat (double 2.731500e+02)
  %2377 = fdiv <8 x double> %2375, splat (double 4.615260e+02)
  %2378 = fadd <8 x double> %2138, %2377
  %2379 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2380 = fdiv <8 x double> %2378, %2379
  %2381 = fmul <8 x double> %2379, %2380
  %2382 = fdiv <8 x double> %2147, %2381
  %2383 = load <8 x double>, ptr %195, align 64, !tbaa !26, !noalias !96
  %2384 = fsub <8 x double> %2147, %2383
  %2385 = load <8 x double>, ptr %208, align 64, !tbaa !26, !noalias !96
  %2386 = fsub <8 x double> %2384, %2385
  %2387 = load <8 x double>, ptr %209, align 64, !tbaa !26, !noalias !96
  %2388 = load <8 x double>, ptr %160, align 64, !tbaa !26, !noalias !96
  %2389 = fcmp une <8 x double> %2388, splat (double 2.000000e+00)
  %2390 = load <8 x double>, ptr %210, align 64, !tbaa !26, !noalias !96
  %2391 = select <8 x i1> %2389, <8 x double> zeroinitializer, <8 x double> %2390
  %2392 = fadd <8 x double> %2387, %2391
  %2393 = fcmp ule <8 x double> %2384, zeroinitializer
  %2394 = fcmp ule <8 x double> %2392, zeroinitializer
  %2395 = or <8 x i1> %2393, %2394
  %2396 = fmul <8 x double> %2380, splat (double 2.000000e+00)
  %2397 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2396)
  %2398 = fmul <8 x double> %2397, %2392
  %2399 = fadd <8 x double> %2384, splat (double 2.000000e+02)
  %2400 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2399)
  %2401 = select <8 x i1> %2393, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2400
  %2402 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2384, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2403 = fmul <8 x double> %2402, %2398
  %2404 = fmul <8 x double> %2401, %2401
  %2405 = fmul <8 x double> %2401, %2404
  %2406 = fdiv <8 x double> %2403, %2405
  %2407 = fmul <8 x double> %2384, %2398
  %2408 = fdiv <8 x double> %2407, %2401
  %2409 = select <8 x i1> %2395, <8 x double> zeroinitializer, <8 x double> %2408
  %2410 = select <8 x i1> %2395, <8 x double> zeroinitializer, <8 x double> %2406
  %2411 = fcmp ule <8 x double> %2386, zeroinitializer
  %2412 = load <8 x double>, ptr %211, align 64, !tbaa !26, !noalias !96
  %2413 = fmul <8 x double> %2386, %2412
  %2414 = select <8 x i1> %2411, <8 x double> zeroinitializer, <8 x double> %2413
  %2415 = fadd <8 x double> %2414, %2409
  %2416 = select <8 x i1> %2411, <8 x double> zeroinitializer, <8 x double> %2412
  %2417 = fadd <8 x double> %2416, %2410
  %2418 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2419 = fsub <8 x double> %2383, %2147
  %2420 = fcmp ule <8 x double> %2419, zeroinitializer
  %2421 = fcmp ule <8 x double> %2418, zeroinitializer
  %2422 = or <8 x i1> %2420, %2421
  %2423 = fmul <8 x double> %2140, %2418
  %2424 = fadd <8 x double> %2419, splat (double 2.000000e+02)
  %2425 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2424)
  %2426 = select <8 x i1> %2420, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2425
  %2427 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2419, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2428 = fmul <8 x double> %2427, %2423
  %2429 = fmul <8 x double> %2426, %2426
  %2430 = fmul <8 x double> %2426, %2429
  %2431 = fdiv <8 x double> %2428, %2430
  %2432 = fmul <8 x double> %2419, %2423
  %2433 = fdiv <8 x double> %2432, %2426
  %2434 = load <8 x double>, ptr %171, align 64, !tbaa !26, !noalias !99
  %2435 = load <8 x double>, ptr %197, align 64, !tbaa !26, !noalias !99
  %2436 = load <8 x double>, ptr %172, align 64, !tbaa !26, !noalias !99
  %2437 = load <8 x double>, ptr %198, align 64, !tbaa !26, !noalias !99
  %2438 = fmul <8 x double> %2436, %2437
  %2439 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2434, <8 x double> %2435, <8 x double> %2438)
  %2440 = load <8 x double>, ptr %201, align 64, !tbaa !26, !noalias !99
  %2441 = load <8 x double>, ptr %170, align 64, !tbaa !26, !noalias !99
  %2442 = load <8 x double>, ptr %199, align 64, !tbaa !26, !noalias !99
  %2443 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2440, <8 x double> %2441, <8 x double> %2442)
  %2444 = load <8 x double>, ptr %200, align 64, !tbaa !26, !noalias !99
  %2445 = fneg <8 x double> %2439
  %2446 = fmul <8 x double> %2440, %2445
  %2447 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2442, <8 x double> %2444, <8 x double> %2446)
  %2448 = fdiv <8 x double> %2447, %2443
  %2449 = fcmp ogt <8 x double> %2375, splat (double 2.000000e+03)
  %2450 = select <8 x i1> %2449, <8 x double> %2375, <8 x double> splat (double 2.000000e+03)
  %2451 = fmul <8 x double> %2450, splat (double 0x3EB0C6F7A0B5ED8D)
  %2452 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2451)
  %2453 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2452)
  %2454 = fmul <8 x double> %2453, %2453
  %2455 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2453, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2454)
  %2456 = fadd <8 x double> %2455, splat (double 0x402DD4891DBECC6B)
  %2457 = fmul <8 x double> %2453, splat (double 0x40C77A698FD9BCCA)
  %2458 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2454, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2457)
  %2459 = fadd <8 x double> %2458, splat (double 0xC0B2D7440748F0B3)
  %2460 = fmul <8 x double> %2453, splat (double 0xC148A99584203885)
  %2461 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2454, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2460)
  %2462 = fadd <8 x double> %2461, splat (double 0x4118B9E59F2691E5)
  %2463 = fmul <8 x double> %2462, splat (double 2.000000e+00)
  %2464 = fneg <8 x double> %2459
  %2465 = fmul <8 x double> %2456, splat (double 4.000000e+00)
  %2466 = fneg <8 x double> %2462
  %2467 = fmul <8 x double> %2465, %2466
  %2468 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2459, <8 x double> %2459, <8 x double> %2467)
  %2469 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2468)
  %2470 = fsub <8 x double> %2464, %2469
  %2471 = fdiv <8 x double> %2463, %2470
  %2472 = fadd <8 x double> %2471, splat (double 0x408451671D164BD4)
  %2473 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2471, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2474 = fmul <8 x double> %2473, splat (double -4.000000e+00)
  %2475 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2472, <8 x double> %2472, <8 x double> %2474)
  %2476 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2475)
  %2477 = fsub <8 x double> %2472, %2476
  %2478 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2477, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2479 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2478, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2480 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2478, <8 x double> %2479, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2481 = fadd <8 x double> %2478, splat (double 2.731500e+02)
  %2482 = fcmp ule <8 x double> %2478, %2448
  %2483 = load <8 x double>, ptr %213, align 64, !tbaa !26, !noalias !99
  %2484 = fmul <8 x double> %2443, %2483
  %2485 = fadd <8 x double> %2443, %2483
  %2486 = fdiv <8 x double> %2484, %2485
  %2487 = fdiv <8 x double> %2486, %2480
  %2488 = fmul <8 x double> %2481, splat (double 4.615260e+02)
  %2489 = fmul <8 x double> %2450, %2480
  %2490 = fmul <8 x double> %2478, %2483
  %2491 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2448, <8 x double> %2443, <8 x double> %2490)
  %2492 = fdiv <8 x double> %2491, %2485
  %2493 = select <8 x i1> %2482, <8 x double> %2448, <8 x double> %2492
  store <8 x double> %2493, ptr %203, align 64, !tbaa !26, !noalias !99
  %2494 = fsub <8 x double> %2478, %2448
  %2495 = fmul <8 x double> %2494, %2487
  %2496 = select <8 x i1> %2482, <8 x double> zeroinitializer, <8 x double> %2495
  %2497 = fmul <8 x double> %2376, splat (double 4.615260e+02)
  %2498 = fmul <8 x double> %2376, %2497
  %2499 = fmul <8 x double> %2147, %2178
  %2500 = fdiv <8 x double> %2498, %2499
  %2501 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2441, <8 x double> %2147, <8 x double> %2122)
  %2502 = fsub <8 x double> %2371, %2496
  %2503 = fmul <8 x double> %2502, splat (double -4.615260e+02)
  %2504 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2125, <8 x double> %2501, <8 x double> %2503)
  %2505 = fmul <8 x double> %2433, splat (double -2.870530e+02)
  %2506 = select <8 x i1> %2422, <8 x double> splat (double -0.000000e+00), <8 x double> %2505
  %2507 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2382, <8 x double> %2415, <8 x double> %2506)
  %2508 = fadd <8 x double> %2507, %2504
  %2509 = fneg <8 x double> %2481
  %2510 = fmul <8 x double> %2488, %2509
  %2511 = fdiv <8 x double> %2510, %2489
  %2512 = fmul <8 x double> %2511, %2487
  %2513 = select <8 x i1> %2482, <8 x double> splat (double -0.000000e+00), <8 x double> %2512
  %2514 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2372, <8 x double> %2500, <8 x double> %2513)
  %2515 = fmul <8 x double> %2514, splat (double -4.615260e+02)
  %2516 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2125, <8 x double> %2441, <8 x double> %2515)
  %2517 = fmul <8 x double> %2431, splat (double 2.870530e+02)
  %2518 = select <8 x i1> %2422, <8 x double> zeroinitializer, <8 x double> %2517
  %2519 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2382, <8 x double> %2417, <8 x double> %2518)
  %2520 = fadd <8 x double> %2519, %2516
  %2521 = fcmp ule <8 x double> %2508, zeroinitializer
  %2522 = fcmp olt <8 x double> %2144, %2147
  %2523 = select <8 x i1> %2521, <8 x i1> splat (i1 true), <8 x i1> %2522
  %2524 = select <8 x i1> %2523, <8 x double> %2144, <8 x double> %2147
  %2525 = fcmp ogt <8 x double> %2143, %2147
  %2526 = select <8 x i1> %2525, <8 x double> %2143, <8 x double> %2147
  %2527 = select <8 x i1> %2521, <8 x double> %2526, <8 x double> %2143
  %2528 = fdiv <8 x double> %2508, %2520
  %2529 = fsub <8 x double> %2147, %2528
  %2530 = fcmp uge <8 x double> %2527, %2529
  %2531 = fcmp uge <8 x double> %2529, %2524
  %2532 = or <8 x i1> %2530, %2531
  %2533 = fadd <8 x double> %2527, %2524
  %2534 = fmul <8 x double> %2533, splat (double 5.000000e-01)
  %2535 = select <8 x i1> %2532, <8 x double> %2534, <8 x double> %2529
  %2536 = fsub <8 x double> %2535, %2147
  %2537 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2536)
  %2538 = fcmp oge <8 x double> %2537, splat (double 2.000000e-01)
  %2539 = select <8 x i1> %2538, <8 x i64> %2145, <8 x i64> zeroinitializer
  %2540 = icmp eq <8 x i64> %2539, zeroinitializer
  %2541 = select <8 x i1> %2540, <8 x double> %2147, <8 x double> %2535
  %2542 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2539)
  %2543 = icmp ne i64 %2542, 0
  %2544 = add nuw nsw i32 %2146, 1
  %2545 = icmp samesign ult i32 %2146, 59
  %2546 = select i1 %2543, i1 %2545, i1 false
  br i1 %2546, label %2141, label %2547, !llvm.loop !102

2547:                                             ; preds = %2370
  %2548 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2549 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %2550 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %2551 = load <8 x double>, ptr %215, align 64, !tbaa !26
  %2552 = fmul <8 x double> %2550, %2551
  %2553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2548, <8 x double> %2549, <8 x double> %2552)
  %2554 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2555 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %2556 = fsub <8 x double> %2555, %2541
  %2557 = fcmp ule <8 x double> %2556, zeroinitializer
  %2558 = fcmp ule <8 x double> %2554, zeroinitializer
  %2559 = or <8 x i1> %2558, %2557
  %2560 = fmul <8 x double> %2140, %2554
  %2561 = fadd <8 x double> %2556, splat (double 2.000000e+02)
  %2562 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2561)
  %2563 = select <8 x i1> %2557, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2562
  %2564 = fmul <8 x double> %2560, %2556
  %2565 = fdiv <8 x double> %2564, %2563
  %2566 = fmul <8 x double> %2565, splat (double 2.870530e+02)
  %2567 = select <8 x i1> %2559, <8 x double> zeroinitializer, <8 x double> %2566
  %2568 = fdiv <8 x double> %2567, %2125
  %2569 = fsub <8 x double> %2568, %2553
  %2570 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2571 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2572 = fmul <8 x double> %2380, %2571
  %2573 = fdiv <8 x double> %2415, %2572
  %2574 = fadd <8 x double> %2570, %2573
  %2575 = fdiv <8 x double> %2569, %2574
  %2576 = fcmp ogt <8 x double> %2575, zeroinitializer
  %2577 = select <8 x i1> %2576, <8 x double> %2575, <8 x double> zeroinitializer
  %2578 = fcmp olt <8 x double> %2577, %2541
  %2579 = select <8 x i1> %2578, <8 x double> %2577, <8 x double> %2541
  %2580 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2581 = select <8 x i1> %2136, <8 x double> %2580, <8 x double> %2579
  store <8 x double> %2581, ptr %202, align 64, !tbaa !26
  %2582 = select <8 x i1> %2136, <8 x double> %2113, <8 x double> %2493
  store <8 x double> %2582, ptr %203, align 64, !tbaa !26
  store <8 x double> %2541, ptr %196, align 64, !tbaa !26
  store <8 x double> %2176, ptr %216, align 64, !tbaa !26
  %2583 = load i64, ptr %166, align 8, !tbaa !20
  br label %2753

2584:                                             ; preds = %2092
  store <8 x double> %2094, ptr %216, align 64, !tbaa !26
  %2585 = icmp sgt i64 %1856, 0
  br i1 %2585, label %2586, label %2756

2586:                                             ; preds = %2584
  %2587 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2094, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2588 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2094, <8 x double> %2587, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2589 = fdiv <8 x double> splat (double 1.000000e+00), %2588
  %2590 = fadd <8 x double> %2094, splat (double 1.000000e-09)
  br label %2591

2591:                                             ; preds = %2586, %2688
  %2592 = phi i64 [ 0, %2586 ], [ %2750, %2688 ]
  %2593 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !103
  %2594 = getelementptr inbounds nuw %struct.Piece, ptr %2593, i64 %2592
  %2595 = getelementptr inbounds nuw i8, ptr %2594, i64 5824
  %2596 = load <8 x double>, ptr %2595, align 64, !tbaa !26, !noalias !103
  %2597 = getelementptr inbounds nuw i8, ptr %2594, i64 5888
  %2598 = load <8 x double>, ptr %2597, align 64, !tbaa !26, !noalias !103
  %2599 = getelementptr inbounds nuw i8, ptr %2594, i64 7296
  %2600 = load <8 x double>, ptr %2599, align 64, !tbaa !26, !noalias !103
  %2601 = fcmp ule <8 x double> %2600, splat (double 1.000000e+00)
  %2602 = fmul <8 x double> %2094, %2598
  %2603 = fcmp ogt <8 x double> %2596, %2602
  %2604 = and <8 x i1> %2601, %2603
  %2605 = fneg <8 x double> %2598
  %2606 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2605, <8 x double> %2094, <8 x double> %2596)
  %2607 = fmul <8 x double> %2589, %2606
  %2608 = select <8 x i1> %2604, <8 x double> %2607, <8 x double> zeroinitializer
  %2609 = fdiv <8 x double> %2596, %2598
  %2610 = select <8 x i1> %2604, <8 x double> %2094, <8 x double> %2609
  %2611 = getelementptr inbounds nuw i8, ptr %2594, i64 7488
  %2612 = load <8 x i64>, ptr %2611, align 64, !tbaa !26, !noalias !103
  %2613 = getelementptr inbounds nuw i8, ptr %2594, i64 2240
  %2614 = load <8 x double>, ptr %2613, align 64, !tbaa !26, !noalias !103
  %2615 = fcmp ule <8 x double> %2614, zeroinitializer
  %2616 = xor <8 x i1> %2601, splat (i1 true)
  %2617 = select <8 x i1> %2616, <8 x i1> splat (i1 true), <8 x i1> %2615
  %2618 = getelementptr inbounds nuw i8, ptr %2594, i64 5952
  %2619 = load <8 x double>, ptr %2618, align 64, !tbaa !26, !noalias !103
  %2620 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2605, <8 x double> %2619, <8 x double> %2596)
  %2621 = fcmp ogt <8 x double> %2620, zeroinitializer
  %2622 = select <8 x i1> %2621, <8 x double> %2620, <8 x double> zeroinitializer
  %2623 = fmul <8 x double> %2589, %2622
  %2624 = icmp eq <8 x i64> %2612, zeroinitializer
  %2625 = select <8 x i1> %2617, <8 x i1> splat (i1 true), <8 x i1> %2624
  %2626 = select <8 x i1> %2625, <8 x double> %2608, <8 x double> %2623
  %2627 = select <8 x i1> %2625, <8 x double> %2610, <8 x double> %2619
  %2628 = load i64, ptr %141, align 16, !tbaa !21, !noalias !106
  %2629 = sitofp i64 %2628 to double
  %2630 = insertelement <8 x double> poison, double %2629, i64 0
  %2631 = shufflevector <8 x double> %2630, <8 x double> poison, <8 x i32> zeroinitializer
  %2632 = icmp sgt i64 %2628, 0
  br i1 %2632, label %2633, label %2688

2633:                                             ; preds = %2591
  %2634 = getelementptr inbounds nuw i8, ptr %2594, i64 7608
  %2635 = load ptr, ptr %2634, align 8, !tbaa !76, !noalias !106
  %2636 = getelementptr inbounds nuw i8, ptr %2594, i64 7616
  %2637 = load ptr, ptr %2636, align 64, !tbaa !77, !noalias !106
  %2638 = getelementptr inbounds nuw i8, ptr %2594, i64 7552
  %2639 = load i64, ptr %2638, align 64, !tbaa !31, !noalias !106
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
  %2650 = load <8 x double>, ptr %2649, align 64, !tbaa !26, !noalias !106
  %2651 = getelementptr inbounds nuw <8 x double>, ptr %2637, i64 %2648
  %2652 = load <8 x double>, ptr %2651, align 64, !tbaa !26, !noalias !106
  %2653 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2652, <8 x double> %2094, <8 x double> %2650)
  %2654 = fcmp ogt <8 x double> %2653, %2590
  %2655 = select <8 x i1> %2654, <8 x i64> %2644, <8 x i64> zeroinitializer
  %2656 = icmp sgt i64 %2645, %2639
  %2657 = select i1 %2656, <8 x i64> %2655, <8 x i64> zeroinitializer
  %2658 = icmp slt i64 %2645, %2628
  br i1 %2658, label %2659, label %2668

2659:                                             ; preds = %2643
  %2660 = load ptr, ptr %2640, align 16, !tbaa !74, !noalias !106
  %2661 = getelementptr inbounds nuw <8 x double>, ptr %2660, i64 %2645
  %2662 = load <8 x double>, ptr %2661, align 64, !tbaa !26, !noalias !106
  %2663 = fsub <8 x double> %2653, %2094
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
  %2673 = load ptr, ptr %2641, align 8, !tbaa !73, !noalias !106
  %2674 = getelementptr inbounds nuw <8 x double>, ptr %2673, i64 %2648
  %2675 = load <8 x double>, ptr %2674, align 64, !tbaa !26, !noalias !106
  %2676 = load ptr, ptr %2642, align 8, !tbaa !75, !noalias !106
  %2677 = getelementptr inbounds nuw <8 x double>, ptr %2676, i64 %2648
  %2678 = load <8 x double>, ptr %2677, align 64, !tbaa !26, !noalias !106
  %2679 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2678, <8 x double> %2094, <8 x double> %2675)
  %2680 = icmp eq <8 x i64> %2657, zeroinitializer
  %2681 = select <8 x i1> %2680, <8 x double> zeroinitializer, <8 x double> %2679
  %2682 = fadd <8 x double> %2669, %2681
  %2683 = uitofp nneg i64 %2648 to double
  %2684 = insertelement <8 x double> poison, double %2683, i64 0
  %2685 = shufflevector <8 x double> %2684, <8 x double> poison, <8 x i32> zeroinitializer
  %2686 = select <8 x i1> %2680, <8 x double> %2646, <8 x double> %2685
  %2687 = icmp samesign ugt i64 %2645, 1
  br i1 %2687, label %2643, label %2688, !llvm.loop !94

2688:                                             ; preds = %2672, %2668, %2591
  %2689 = phi <8 x double> [ %2631, %2591 ], [ %2646, %2668 ], [ %2686, %2672 ]
  %2690 = phi <8 x double> [ zeroinitializer, %2591 ], [ %2669, %2668 ], [ %2682, %2672 ]
  %2691 = getelementptr inbounds nuw i8, ptr %2594, i64 6080
  %2692 = load <8 x double>, ptr %2691, align 64, !tbaa !26, !noalias !103
  %2693 = getelementptr inbounds nuw i8, ptr %2594, i64 5504
  %2694 = load <8 x double>, ptr %2693, align 64, !tbaa !26, !noalias !103
  %2695 = getelementptr inbounds nuw i8, ptr %2594, i64 7040
  %2696 = load <8 x double>, ptr %2695, align 64, !tbaa !26, !noalias !103
  %2697 = fneg <8 x double> %2696
  %2698 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2692, <8 x double> %2694, <8 x double> %2697)
  %2699 = getelementptr inbounds nuw i8, ptr %2594, i64 6976
  %2700 = load <8 x double>, ptr %2699, align 64, !tbaa !26, !noalias !103
  %2701 = fadd <8 x double> %2692, %2700
  %2702 = getelementptr inbounds nuw i8, ptr %2594, i64 7360
  %2703 = load <8 x i64>, ptr %2702, align 64, !tbaa !26, !noalias !103
  %2704 = getelementptr inbounds nuw i8, ptr %2594, i64 7712
  %2705 = load ptr, ptr %2704, align 32, !tbaa !82, !noalias !103
  %2706 = load <8 x double>, ptr %2705, align 64, !tbaa !26, !noalias !103
  %2707 = fmul <8 x double> %2692, %2706
  %2708 = icmp eq <8 x i64> %2703, zeroinitializer
  %2709 = select <8 x i1> %2708, <8 x double> %2698, <8 x double> %2707
  %2710 = getelementptr inbounds nuw i8, ptr %2594, i64 7720
  %2711 = load ptr, ptr %2710, align 8, !tbaa !83, !noalias !103
  %2712 = load <8 x double>, ptr %2711, align 64, !tbaa !26, !noalias !103
  %2713 = fsub <8 x double> splat (double 1.000000e+00), %2712
  %2714 = fmul <8 x double> %2692, %2713
  %2715 = select <8 x i1> %2708, <8 x double> %2701, <8 x double> %2714
  %2716 = fneg <8 x double> %2715
  %2717 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2716, <8 x double> %2094, <8 x double> %2709)
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
  %2735 = select <8 x i1> %2733, <8 x double> %2627, <8 x double> %2094
  %2736 = getelementptr inbounds nuw i8, ptr %2594, i64 5632
  store <8 x double> %2734, ptr %2736, align 64, !tbaa !26, !noalias !103
  %2737 = getelementptr inbounds nuw i8, ptr %2594, i64 5568
  store <8 x double> %2735, ptr %2737, align 64, !tbaa !26, !noalias !103
  %2738 = fmul <8 x double> %2589, %2690
  %2739 = fmul <8 x double> %2589, %2726
  %2740 = icmp eq <8 x i64> %2729, zeroinitializer
  %2741 = select <8 x i1> %2740, <8 x double> zeroinitializer, <8 x double> %2739
  %2742 = select <8 x i1> %2723, <8 x double> %2738, <8 x double> %2741
  %2743 = getelementptr inbounds nuw i8, ptr %2594, i64 5696
  store <8 x double> %2742, ptr %2743, align 64, !tbaa !26, !noalias !103
  %2744 = load i64, ptr %141, align 16, !tbaa !21, !noalias !103
  %2745 = sitofp i64 %2744 to double
  %2746 = insertelement <8 x double> poison, double %2745, i64 0
  %2747 = shufflevector <8 x double> %2746, <8 x double> poison, <8 x i32> zeroinitializer
  %2748 = select <8 x i1> %2733, <8 x double> %2747, <8 x double> %2689
  %2749 = getelementptr inbounds nuw i8, ptr %2594, i64 5760
  store <8 x double> %2748, ptr %2749, align 64, !tbaa !26, !noalias !103
  %2750 = add nuw nsw i64 %2592, 1
  %2751 = load i64, ptr %166, align 8, !tbaa !20, !noalias !103
  %2752 = icmp slt i64 %2750, %2751
  br i1 %2752, label %2591, label %2753, !llvm.loop !95

2753:                                             ; preds = %2688, %2547
  %2754 = phi i64 [ %2583, %2547 ], [ %2751, %2688 ]
  %2755 = icmp sgt i64 %2754, 0
  br i1 %2755, label %2873, label %2756

2756:                                             ; preds = %2753, %2584
  %2757 = phi i64 [ %2754, %2753 ], [ %1856, %2584 ]
  %2758 = load <8 x double>, ptr %173, align 64, !tbaa !26
  br label %2786

2759:                                             ; preds = %2946
  %2760 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %2761 = icmp sgt i64 %2970, 0
  br i1 %2761, label %2762, label %2786

2762:                                             ; preds = %2759
  %2763 = load ptr, ptr %151, align 8, !tbaa !28
  br label %2764

2764:                                             ; preds = %2762, %2764
  %2765 = phi <8 x double> [ zeroinitializer, %2762 ], [ %2778, %2764 ]
  %2766 = phi <8 x double> [ zeroinitializer, %2762 ], [ %2783, %2764 ]
  %2767 = phi i64 [ 0, %2762 ], [ %2784, %2764 ]
  %2768 = getelementptr inbounds nuw %struct.Piece, ptr %2763, i64 %2767
  %2769 = getelementptr inbounds nuw i8, ptr %2768, i64 7488
  %2770 = load <8 x i64>, ptr %2769, align 64, !tbaa !26
  %2771 = getelementptr inbounds nuw i8, ptr %2768, i64 128
  %2772 = load <8 x double>, ptr %2771, align 64, !tbaa !26
  %2773 = getelementptr inbounds nuw i8, ptr %2768, i64 6336
  %2774 = load <8 x double>, ptr %2773, align 64, !tbaa !26
  %2775 = fmul <8 x double> %2772, %2774
  %2776 = icmp eq <8 x i64> %2770, zeroinitializer
  %2777 = select <8 x i1> %2776, <8 x double> %2775, <8 x double> zeroinitializer
  %2778 = fadd <8 x double> %2765, %2777
  %2779 = getelementptr inbounds nuw i8, ptr %2768, i64 6208
  %2780 = load <8 x double>, ptr %2779, align 64, !tbaa !26
  %2781 = fmul <8 x double> %2772, %2780
  %2782 = select <8 x i1> %2776, <8 x double> %2781, <8 x double> zeroinitializer
  %2783 = fadd <8 x double> %2766, %2782
  %2784 = add nuw nsw i64 %2767, 1
  %2785 = icmp eq i64 %2784, %2970
  br i1 %2785, label %2786, label %2764, !llvm.loop !109

2786:                                             ; preds = %2764, %2756, %2759
  %2787 = phi i1 [ false, %2759 ], [ false, %2756 ], [ true, %2764 ]
  %2788 = phi <8 x double> [ %2760, %2759 ], [ %2758, %2756 ], [ %2760, %2764 ]
  %2789 = phi i64 [ %2970, %2759 ], [ %2757, %2756 ], [ %2970, %2764 ]
  %2790 = phi <8 x double> [ zeroinitializer, %2759 ], [ zeroinitializer, %2756 ], [ %2783, %2764 ]
  %2791 = phi <8 x double> [ zeroinitializer, %2759 ], [ zeroinitializer, %2756 ], [ %2778, %2764 ]
  %2792 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %2793 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2794 = fsub <8 x double> %2788, %2793
  %2795 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2792, <8 x double> %2794, <8 x double> %2791)
  %2796 = fadd <8 x double> %2790, %2792
  store <8 x double> %2795, ptr %178, align 64, !tbaa !26
  %2797 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2798 = fcmp ule <8 x double> %2797, zeroinitializer
  %2799 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %2800 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2797, <8 x double> splat (double 5.000000e-01), <8 x double> %2799)
  %2801 = fsub <8 x double> %2800, %2788
  %2802 = fcmp ogt <8 x double> %2797, splat (double 1.000000e-30)
  %2803 = select <8 x i1> %2802, <8 x double> %2797, <8 x double> splat (double 1.000000e-30)
  %2804 = fdiv <8 x double> %2801, %2803
  %2805 = fcmp ogt <8 x double> %2804, zeroinitializer
  %2806 = select <8 x i1> %2805, <8 x double> %2804, <8 x double> zeroinitializer
  %2807 = fcmp olt <8 x double> %2806, splat (double 1.000000e+00)
  %2808 = select <8 x i1> %2807, <8 x double> %2806, <8 x double> splat (double 1.000000e+00)
  %2809 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2810 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %2811 = icmp eq <8 x i64> %2810, zeroinitializer
  %2812 = select <8 x i1> %2811, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %2813 = select <8 x i1> %2798, <8 x double> %2812, <8 x double> %2808
  %2814 = fmul <8 x double> %2809, %2813
  %2815 = fcmp ule <8 x double> %2814, zeroinitializer
  %2816 = fcmp uge <8 x double> %2814, %2809
  %2817 = or <8 x i1> %2815, %2816
  %2818 = or <8 x i1> %2798, %2817
  %2819 = fdiv <8 x double> %2809, %2803
  %2820 = select <8 x i1> %2818, <8 x double> zeroinitializer, <8 x double> %2819
  %2821 = fadd <8 x double> %2796, %2820
  %2822 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2823 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %2824 = fmul <8 x double> %2788, %2823
  %2825 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %2826 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %2827 = fmul <8 x double> %2826, splat (double 5.000000e-01)
  %2828 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2827, <8 x double> %2788, <8 x double> %2825)
  %2829 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %2830 = fmul <8 x double> %2788, %2829
  %2831 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2824, <8 x double> %2828, <8 x double> %2830)
  %2832 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2833 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %2834 = fmul <8 x double> %2823, %2833
  %2835 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2827, <8 x double> %2833, <8 x double> %2825)
  %2836 = fmul <8 x double> %2829, %2833
  %2837 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2834, <8 x double> %2835, <8 x double> %2836)
  %2838 = fmul <8 x double> %2832, %2837
  %2839 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2822, <8 x double> %2831, <8 x double> %2838)
  %2840 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %2841 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %2842 = fmul <8 x double> %2823, %2841
  %2843 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2827, <8 x double> %2841, <8 x double> %2825)
  %2844 = fmul <8 x double> %2829, %2841
  %2845 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2842, <8 x double> %2843, <8 x double> %2844)
  %2846 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2840, <8 x double> %2845, <8 x double> %2839)
  %2847 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2826, <8 x double> %2788, <8 x double> %2825)
  %2848 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2823, <8 x double> %2847, <8 x double> %2829)
  %2849 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %2850 = fcmp une <8 x double> %2849, zeroinitializer
  %2851 = fadd <8 x double> %2795, %2846
  %2852 = fsub <8 x double> %2851, %2814
  %2853 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2822, <8 x double> %2848, <8 x double> %2821)
  %2854 = fdiv <8 x double> %2852, %2853
  %2855 = fsub <8 x double> %2788, %2854
  %2856 = select <8 x i1> %2850, <8 x double> %2788, <8 x double> %2855
  store <8 x double> %2856, ptr %173, align 64, !tbaa !26
  %2857 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %2858 = fneg <8 x double> %2832
  %2859 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2858, <8 x double> %2857, <8 x double> %2814)
  %2860 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %2861 = fneg <8 x double> %2840
  %2862 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2861, <8 x double> %2860, <8 x double> %2859)
  %2863 = fdiv <8 x double> %2862, %2822
  %2864 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %2865 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2858, <8 x double> %2864, <8 x double> %2795)
  %2866 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %2867 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2861, <8 x double> %2866, <8 x double> %2865)
  %2868 = fdiv <8 x double> %2867, %2822
  %2869 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %2870 = select <8 x i1> %2850, <8 x double> %2869, <8 x double> %2863
  store <8 x double> %2870, ptr %223, align 64, !tbaa !26
  %2871 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %2872 = select <8 x i1> %2850, <8 x double> %2871, <8 x double> %2868
  store <8 x double> %2872, ptr %224, align 64, !tbaa !26
  br i1 %2787, label %2972, label %3235

2873:                                             ; preds = %2753, %2946
  %2874 = phi i64 [ %2969, %2946 ], [ 0, %2753 ]
  %2875 = load ptr, ptr %151, align 8, !tbaa !28
  %2876 = getelementptr inbounds nuw %struct.Piece, ptr %2875, i64 %2874
  %2877 = getelementptr inbounds nuw i8, ptr %2876, i64 5568
  %2878 = load <8 x double>, ptr %2877, align 64, !tbaa !26
  %2879 = load i64, ptr %141, align 16, !tbaa !21
  %2880 = icmp sgt i64 %2879, 0
  br i1 %2880, label %2881, label %2886

2881:                                             ; preds = %2873
  %2882 = getelementptr inbounds nuw i8, ptr %2876, i64 5760
  %2883 = getelementptr inbounds nuw i8, ptr %2876, i64 7608
  %2884 = getelementptr inbounds nuw i8, ptr %2876, i64 7616
  %2885 = getelementptr inbounds nuw i8, ptr %2876, i64 7560
  br label %2901

2886:                                             ; preds = %2901, %2873
  %2887 = getelementptr inbounds nuw i8, ptr %2876, i64 7360
  %2888 = load <8 x i64>, ptr %2887, align 64, !tbaa !26
  %2889 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2888)
  %2890 = icmp eq i64 %2889, 0
  %2891 = load i64, ptr %142, align 8, !tbaa !22
  %2892 = icmp sgt i64 %2891, 0
  br i1 %2890, label %2898, label %2893

2893:                                             ; preds = %2886
  br i1 %2892, label %2894, label %2946

2894:                                             ; preds = %2893
  %2895 = getelementptr inbounds nuw i8, ptr %2876, i64 7712
  %2896 = getelementptr inbounds nuw i8, ptr %2876, i64 7720
  %2897 = getelementptr inbounds nuw i8, ptr %2876, i64 7680
  br label %2921

2898:                                             ; preds = %2886
  br i1 %2892, label %2899, label %2946

2899:                                             ; preds = %2898
  %2900 = getelementptr inbounds nuw i8, ptr %2876, i64 7680
  br label %2939

2901:                                             ; preds = %2881, %2901
  %2902 = phi <8 x double> [ %2878, %2881 ], [ %2917, %2901 ]
  %2903 = phi i64 [ %2879, %2881 ], [ %2904, %2901 ]
  %2904 = add nsw i64 %2903, -1
  %2905 = load <8 x double>, ptr %2882, align 64, !tbaa !26
  %2906 = uitofp nneg i64 %2904 to double
  %2907 = insertelement <8 x double> poison, double %2906, i64 0
  %2908 = shufflevector <8 x double> %2907, <8 x double> poison, <8 x i32> zeroinitializer
  %2909 = fcmp ugt <8 x double> %2905, %2908
  %2910 = load ptr, ptr %2883, align 8, !tbaa !76
  %2911 = getelementptr inbounds nuw <8 x double>, ptr %2910, i64 %2904
  %2912 = load <8 x double>, ptr %2911, align 64, !tbaa !26
  %2913 = load ptr, ptr %2884, align 64, !tbaa !77
  %2914 = getelementptr inbounds nuw <8 x double>, ptr %2913, i64 %2904
  %2915 = load <8 x double>, ptr %2914, align 64, !tbaa !26
  %2916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2915, <8 x double> %2902, <8 x double> %2912)
  %2917 = select <8 x i1> %2909, <8 x double> %2916, <8 x double> %2878
  %2918 = load ptr, ptr %2885, align 8, !tbaa !58
  %2919 = getelementptr inbounds nuw <8 x double>, ptr %2918, i64 %2904
  store <8 x double> %2917, ptr %2919, align 64, !tbaa !26
  %2920 = icmp samesign ugt i64 %2903, 1
  br i1 %2920, label %2901, label %2886, !llvm.loop !110

2921:                                             ; preds = %2894, %2921
  %2922 = phi i64 [ 0, %2894 ], [ %2936, %2921 ]
  %2923 = phi <8 x double> [ %2878, %2894 ], [ %2933, %2921 ]
  %2924 = load <8 x i64>, ptr %2887, align 64, !tbaa !26
  %2925 = load ptr, ptr %2895, align 32, !tbaa !82
  %2926 = getelementptr inbounds nuw <8 x double>, ptr %2925, i64 %2922
  %2927 = load <8 x double>, ptr %2926, align 64, !tbaa !26
  %2928 = load ptr, ptr %2896, align 8, !tbaa !83
  %2929 = getelementptr inbounds nuw <8 x double>, ptr %2928, i64 %2922
  %2930 = load <8 x double>, ptr %2929, align 64, !tbaa !26
  %2931 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2930, <8 x double> %2923, <8 x double> %2927)
  %2932 = icmp eq <8 x i64> %2924, zeroinitializer
  %2933 = select <8 x i1> %2932, <8 x double> %2878, <8 x double> %2931
  %2934 = load ptr, ptr %2897, align 64, !tbaa !111
  %2935 = getelementptr inbounds nuw <8 x double>, ptr %2934, i64 %2922
  store <8 x double> %2933, ptr %2935, align 64, !tbaa !26
  %2936 = add nuw nsw i64 %2922, 1
  %2937 = load i64, ptr %142, align 8, !tbaa !22
  %2938 = icmp slt i64 %2936, %2937
  br i1 %2938, label %2921, label %2946, !llvm.loop !112

2939:                                             ; preds = %2899, %2939
  %2940 = phi i64 [ 0, %2899 ], [ %2943, %2939 ]
  %2941 = load ptr, ptr %2900, align 64, !tbaa !111
  %2942 = getelementptr inbounds nuw <8 x double>, ptr %2941, i64 %2940
  store <8 x double> %2878, ptr %2942, align 64, !tbaa !26
  %2943 = add nuw nsw i64 %2940, 1
  %2944 = load i64, ptr %142, align 8, !tbaa !22
  %2945 = icmp slt i64 %2943, %2944
  br i1 %2945, label %2939, label %2946, !llvm.loop !113

2946:                                             ; preds = %2921, %2939, %2893, %2898
  %2947 = phi <8 x double> [ %2878, %2898 ], [ %2878, %2893 ], [ %2878, %2939 ], [ %2933, %2921 ]
  %2948 = load <8 x i64>, ptr %2887, align 64, !tbaa !26
  %2949 = getelementptr inbounds nuw i8, ptr %2876, i64 6272
  %2950 = load <8 x double>, ptr %2949, align 64, !tbaa !26
  %2951 = icmp eq <8 x i64> %2948, zeroinitializer
  %2952 = select <8 x i1> %2951, <8 x double> zeroinitializer, <8 x double> %2950
  %2953 = fsub <8 x double> splat (double 1.000000e+00), %2952
  %2954 = getelementptr inbounds nuw i8, ptr %2876, i64 5504
  %2955 = load <8 x double>, ptr %2954, align 64, !tbaa !26
  %2956 = fmul <8 x double> %2952, %2955
  %2957 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2953, <8 x double> %2947, <8 x double> %2956)
  %2958 = getelementptr inbounds nuw i8, ptr %2876, i64 6464
  store <8 x double> %2957, ptr %2958, align 64, !tbaa !26
  %2959 = getelementptr inbounds nuw i8, ptr %2876, i64 6208
  %2960 = load <8 x double>, ptr %2959, align 64, !tbaa !26
  %2961 = fsub <8 x double> %2955, %2947
  %2962 = fmul <8 x double> %2961, %2960
  %2963 = getelementptr inbounds nuw i8, ptr %2876, i64 6336
  store <8 x double> %2962, ptr %2963, align 64, !tbaa !26
  %2964 = getelementptr inbounds nuw i8, ptr %2876, i64 3200
  %2965 = load <8 x double>, ptr %2964, align 64, !tbaa !26
  %2966 = fdiv <8 x double> %2962, %2965
  %2967 = fsub <8 x double> %2955, %2966
  %2968 = getelementptr inbounds nuw i8, ptr %2876, i64 6400
  store <8 x double> %2967, ptr %2968, align 64, !tbaa !26
  %2969 = add nuw nsw i64 %2874, 1
  %2970 = load i64, ptr %166, align 8, !tbaa !20
  %2971 = icmp slt i64 %2969, %2970
  br i1 %2971, label %2873, label %2759, !llvm.loop !114

2972:                                             ; preds = %2786, %3190
  %2973 = phi i64 [ %3232, %3190 ], [ 0, %2786 ]
  %2974 = phi <8 x double> [ %3231, %3190 ], [ zeroinitializer, %2786 ]
  %2975 = load ptr, ptr %151, align 8, !tbaa !28
  %2976 = getelementptr inbounds nuw %struct.Piece, ptr %2975, i64 %2973
  %2977 = getelementptr inbounds nuw i8, ptr %2976, i64 5632
  %2978 = load <8 x double>, ptr %2977, align 64, !tbaa !26
  %2979 = getelementptr inbounds nuw i8, ptr %2976, i64 5696
  %2980 = load <8 x double>, ptr %2979, align 64, !tbaa !26
  %2981 = fadd <8 x double> %2978, %2980
  %2982 = getelementptr inbounds nuw i8, ptr %2976, i64 5568
  %2983 = load <8 x double>, ptr %2982, align 64, !tbaa !26
  %2984 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %2985 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2984, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2986 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2984, <8 x double> %2985, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2987 = getelementptr inbounds nuw i8, ptr %2976, i64 5312
  %2988 = load <8 x double>, ptr %2987, align 64, !tbaa !26
  %2989 = getelementptr inbounds nuw i8, ptr %2976, i64 4032
  %2990 = load <8 x double>, ptr %2989, align 64, !tbaa !26
  %2991 = fneg <8 x double> %2988
  %2992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2991, <8 x double> %2990, <8 x double> %2981)
  %2993 = getelementptr inbounds nuw i8, ptr %2976, i64 5376
  %2994 = load <8 x double>, ptr %2993, align 64, !tbaa !26
  %2995 = getelementptr inbounds nuw i8, ptr %2976, i64 4800
  %2996 = load <8 x double>, ptr %2995, align 64, !tbaa !26
  %2997 = fneg <8 x double> %2994
  %2998 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2997, <8 x double> %2996, <8 x double> %2992)
  %2999 = getelementptr inbounds nuw i8, ptr %2976, i64 5248
  %3000 = load <8 x double>, ptr %2999, align 64, !tbaa !26
  %3001 = fdiv <8 x double> %2998, %3000
  %3002 = getelementptr inbounds nuw i8, ptr %2976, i64 1600
  %3003 = load <8 x double>, ptr %3002, align 64, !tbaa !26
  %3004 = fsub <8 x double> %3003, %3001
  %3005 = getelementptr inbounds nuw i8, ptr %2976, i64 3904
  %3006 = load <8 x double>, ptr %3005, align 64, !tbaa !26
  %3007 = getelementptr inbounds nuw i8, ptr %2976, i64 7168
  %3008 = load <8 x double>, ptr %3007, align 64, !tbaa !26
  %3009 = fsub <8 x double> %3006, %3008
  %3010 = getelementptr inbounds nuw i8, ptr %2976, i64 6784
  %3011 = load <8 x double>, ptr %3010, align 64, !tbaa !26
  %3012 = getelementptr inbounds nuw i8, ptr %2976, i64 1280
  %3013 = load <8 x double>, ptr %3012, align 64, !tbaa !26
  %3014 = fmul <8 x double> %3011, %3013
  %3015 = getelementptr inbounds nuw i8, ptr %2976, i64 6464
  %3016 = load <8 x double>, ptr %3015, align 64, !tbaa !26
  %3017 = fsub <8 x double> %3016, %2983
  %3018 = fmul <8 x double> %3014, %3017
  %3019 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2986, <8 x double> %2981, <8 x double> %3018)
  %3020 = fsub <8 x double> %3004, %3009
  %3021 = getelementptr inbounds nuw i8, ptr %2976, i64 2944
  %3022 = getelementptr inbounds nuw i8, ptr %2976, i64 3072
  %3023 = load <8 x double>, ptr %3022, align 64, !tbaa !26
  %3024 = fsub <8 x double> %3020, %3023
  %3025 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3024)
  %3026 = getelementptr inbounds nuw i8, ptr %2976, i64 832
  %3027 = load <8 x double>, ptr %3026, align 64, !tbaa !26
  %3028 = fdiv <8 x double> %3025, %3027
  %3029 = getelementptr inbounds nuw i8, ptr %2976, i64 7360
  %3030 = load <8 x i64>, ptr %3029, align 64, !tbaa !26
  %3031 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3030)
  %3032 = icmp eq i64 %3031, 0
  br i1 %3032, label %3190, label %3033

3033:                                             ; preds = %2972
  %3034 = getelementptr inbounds nuw i8, ptr %2976, i64 3776
  %3035 = load <8 x double>, ptr %3034, align 64, !tbaa !26
  %3036 = fcmp ogt <8 x double> %3009, %3004
  %3037 = getelementptr inbounds nuw i8, ptr %2976, i64 7296
  %3038 = load <8 x double>, ptr %3037, align 64, !tbaa !26
  %3039 = fcmp oeq <8 x double> %3038, zeroinitializer
  %3040 = select <8 x i1> %3039, <8 x i1> %3036, <8 x i1> zeroinitializer
  %3041 = select <8 x i1> %3040, <8 x i64> %3030, <8 x i64> zeroinitializer
  %3042 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3041)
  %3043 = icmp eq i64 %3042, 0
  br i1 %3043, label %3114, label %3044

3044:                                             ; preds = %3033
  %3045 = fsub <8 x double> %3009, %3004
  %3046 = fdiv <8 x double> %3045, %3027
  %3047 = getelementptr inbounds nuw i8, ptr %2976, i64 7592
  %3048 = load ptr, ptr %3047, align 8, !tbaa !65
  %3049 = load i64, ptr %141, align 16, !tbaa !21
  %3050 = add nsw i64 %3049, -1
  %3051 = getelementptr inbounds <8 x double>, ptr %3048, i64 %3050
  %3052 = load <8 x double>, ptr %3051, align 64, !tbaa !26
  %3053 = icmp sgt i64 %3049, 1
  br i1 %3053, label %3054, label %3106

3054:                                             ; preds = %3044
  %3055 = getelementptr inbounds nuw i8, ptr %2976, i64 7552
  %3056 = load i64, ptr %3055, align 64, !tbaa !31
  %3057 = getelementptr inbounds nuw i8, ptr %2976, i64 4416
  %3058 = getelementptr inbounds nuw i8, ptr %2976, i64 1536
  %3059 = getelementptr inbounds nuw i8, ptr %2976, i64 7648
  br label %3060

3060:                                             ; preds = %3054, %3103
  %3061 = phi <8 x double> [ %3035, %3054 ], [ %3098, %3103 ]
  %3062 = phi i64 [ %3050, %3054 ], [ %3104, %3103 ]
  %3063 = phi <8 x double> [ %3052, %3054 ], [ %3086, %3103 ]
  %3064 = phi <8 x i64> [ %3041, %3054 ], [ %3090, %3103 ]
  %3065 = phi <8 x double> [ %3046, %3054 ], [ %3097, %3103 ]
  %3066 = icmp slt i64 %3062, %3056
  br i1 %3066, label %3067, label %3073

3067:                                             ; preds = %3060
  %3068 = load ptr, ptr %3059, align 32, !tbaa !72
  %3069 = getelementptr inbounds nuw <8 x double>, ptr %3068, i64 %3062
  %3070 = load <8 x double>, ptr %3069, align 64, !tbaa !26
  %3071 = load <8 x double>, ptr %3058, align 64, !tbaa !26
  %3072 = fmul <8 x double> %3070, %3071
  br label %3081

3073:                                             ; preds = %3060
  %3074 = load <8 x double>, ptr %3057, align 64, !tbaa !26
  %3075 = load <8 x double>, ptr %3058, align 64, !tbaa !26
  %3076 = load ptr, ptr %3059, align 32, !tbaa !72
  %3077 = getelementptr inbounds nuw <8 x double>, ptr %3076, i64 %3062
  %3078 = load <8 x double>, ptr %3077, align 64, !tbaa !26
  %3079 = fsub <8 x double> %3074, %3075
  %3080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3078, <8 x double> %3079, <8 x double> %3075)
  br label %3081

3081:                                             ; preds = %3067, %3073
  %3082 = phi <8 x double> [ %3072, %3067 ], [ %3080, %3073 ]
  %3083 = getelementptr inbounds nuw <8 x double>, ptr %3048, i64 %3062
  %3084 = load <8 x double>, ptr %3083, align 64, !tbaa !26
  %3085 = icmp eq <8 x i64> %3064, zeroinitializer
  %3086 = select <8 x i1> %3085, <8 x double> %3063, <8 x double> %3084
  %3087 = fsub <8 x double> %3061, %3082
  %3088 = fmul <8 x double> %3087, %3086
  %3089 = fcmp olt <8 x double> %3088, %3065
  %3090 = select <8 x i1> %3089, <8 x i64> %3064, <8 x i64> zeroinitializer
  %3091 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3090)
  %3092 = icmp eq i64 %3091, 0
  br i1 %3092, label %3106, label %3093

3093:                                             ; preds = %3081
  %3094 = fneg <8 x double> %3086
  %3095 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3094, <8 x double> %3087, <8 x double> %3065)
  %3096 = icmp eq <8 x i64> %3090, zeroinitializer
  %3097 = select <8 x i1> %3096, <8 x double> %3065, <8 x double> %3095
  %3098 = select <8 x i1> %3096, <8 x double> %3061, <8 x double> %3082
  %3099 = icmp eq i64 %3062, 1
  br i1 %3099, label %3100, label %3103

3100:                                             ; preds = %3093
  %3101 = load <8 x double>, ptr %3048, align 64, !tbaa !26
  %3102 = select <8 x i1> %3096, <8 x double> %3086, <8 x double> %3101
  br label %3106

3103:                                             ; preds = %3093
  %3104 = add nsw i64 %3062, -1
  %3105 = icmp sgt i64 %3062, 1
  br i1 %3105, label %3060, label %3106, !llvm.loop !115

3106:                                             ; preds = %3103, %3081, %3100, %3044
  %3107 = phi <8 x double> [ %3046, %3044 ], [ %3097, %3100 ], [ %3065, %3081 ], [ %3097, %3103 ]
  %3108 = phi <8 x double> [ %3035, %3044 ], [ %3098, %3100 ], [ %3061, %3081 ], [ %3098, %3103 ]
  %3109 = phi <8 x double> [ %3052, %3044 ], [ %3102, %3100 ], [ %3086, %3081 ], [ %3086, %3103 ]
  %3110 = fdiv <8 x double> %3107, %3109
  %3111 = fsub <8 x double> %3108, %3110
  %3112 = icmp eq <8 x i64> %3041, zeroinitializer
  %3113 = select <8 x i1> %3112, <8 x double> %3035, <8 x double> %3111
  br label %3114

3114:                                             ; preds = %3106, %3033
  %3115 = phi <8 x double> [ %3113, %3106 ], [ %3035, %3033 ]
  %3116 = load <8 x double>, ptr %3021, align 64, !tbaa !26
  %3117 = getelementptr inbounds nuw i8, ptr %2976, i64 2560
  %3118 = load <8 x double>, ptr %3117, align 64, !tbaa !26
  %3119 = getelementptr inbounds nuw i8, ptr %2976, i64 2624
  %3120 = load <8 x double>, ptr %3119, align 64, !tbaa !26
  %3121 = getelementptr inbounds nuw i8, ptr %2976, i64 2688
  %3122 = load <8 x double>, ptr %3121, align 64, !tbaa !26
  %3123 = getelementptr inbounds nuw i8, ptr %2976, i64 2752
  %3124 = load <8 x double>, ptr %3123, align 64, !tbaa !26
  %3125 = load <8 x double>, ptr %2976, align 64, !tbaa !26
  %3126 = fmul <8 x double> %3125, splat (double 1.000000e-09)
  br label %3127

3127:                                             ; preds = %3114, %3127
  %3128 = phi <8 x i64> [ splat (i64 -1), %3114 ], [ %3145, %3127 ]
  %3129 = phi i32 [ 0, %3114 ], [ %3146, %3127 ]
  %3130 = phi <8 x double> [ %3116, %3114 ], [ %3142, %3127 ]
  %3131 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3130, <8 x double> %3124, <8 x double> %3122)
  %3132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3130, <8 x double> %3131, <8 x double> %3120)
  %3133 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3130, <8 x double> %3132, <8 x double> %3118)
  %3134 = fsub <8 x double> %3133, %3115
  %3135 = fmul <8 x double> %3130, splat (double 3.000000e+00)
  %3136 = fmul <8 x double> %3135, %3124
  %3137 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3122, <8 x double> splat (double 2.000000e+00), <8 x double> %3136)
  %3138 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3130, <8 x double> %3137, <8 x double> %3120)
  %3139 = fdiv <8 x double> %3134, %3138
  %3140 = fsub <8 x double> %3130, %3139
  %3141 = icmp eq <8 x i64> %3128, zeroinitializer
  %3142 = select <8 x i1> %3141, <8 x double> %3130, <8 x double> %3140
  %3143 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3139)
  %3144 = fcmp oge <8 x double> %3143, %3126
  %3145 = select <8 x i1> %3144, <8 x i64> %3128, <8 x i64> zeroinitializer
  %3146 = add nuw nsw i32 %3129, 1
  %3147 = icmp samesign ult i32 %3129, 3
  %3148 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3145)
  %3149 = icmp ne i64 %3148, 0
  %3150 = select i1 %3147, i1 %3149, i1 false
  br i1 %3150, label %3127, label %3151, !llvm.loop !116

3151:                                             ; preds = %3127
  %3152 = fmul <8 x double> %3125, splat (double 2.800000e-01)
  %3153 = fcmp ogt <8 x double> %3142, %3152
  %3154 = select <8 x i1> %3153, <8 x double> %3142, <8 x double> %3152
  %3155 = fcmp olt <8 x double> %3154, %3125
  %3156 = select <8 x i1> %3155, <8 x double> %3154, <8 x double> %3125
  %3157 = fcmp olt <8 x double> %3009, %3004
  %3158 = icmp eq <8 x i64> %3030, zeroinitializer
  %3159 = select <8 x i1> %3158, <8 x i1> splat (i1 true), <8 x i1> %3157
  %3160 = select <8 x i1> %3159, <8 x double> %3009, <8 x double> %3004
  %3161 = fsub <8 x double> %3156, %3116
  %3162 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3161)
  %3163 = select <8 x i1> %3158, <8 x double> %3028, <8 x double> %3162
  %3164 = select <8 x i1> %3158, <8 x double> %3116, <8 x double> %3156
  store <8 x double> %3164, ptr %3021, align 64, !tbaa !26
  %3165 = getelementptr inbounds nuw i8, ptr %2976, i64 3008
  %3166 = load <8 x double>, ptr %3165, align 64, !tbaa !26
  %3167 = select <8 x i1> %3158, <8 x double> %3166, <8 x double> %3115
  store <8 x double> %3167, ptr %3165, align 64, !tbaa !26
  %3168 = getelementptr inbounds nuw i8, ptr %2976, i64 6720
  %3169 = load <8 x double>, ptr %3168, align 64, !tbaa !26
  %3170 = fmul <8 x double> %3169, splat (double 2.000000e+00)
  %3171 = getelementptr inbounds nuw i8, ptr %2976, i64 384
  %3172 = load <8 x double>, ptr %3171, align 64, !tbaa !26
  %3173 = getelementptr inbounds nuw i8, ptr %2976, i64 448
  %3174 = load <8 x double>, ptr %3173, align 64, !tbaa !26
  %3175 = getelementptr inbounds nuw i8, ptr %2976, i64 512
  %3176 = load <8 x double>, ptr %3175, align 64, !tbaa !26
  %3177 = fmul <8 x double> %2983, %3176
  %3178 = fmul <8 x double> %3177, splat (double 0x3FD5555555555555)
  %3179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3174, <8 x double> splat (double 5.000000e-01), <8 x double> %3178)
  %3180 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2983, <8 x double> %3179, <8 x double> %3172)
  %3181 = fmul <8 x double> %2983, %3180
  %3182 = getelementptr inbounds nuw i8, ptr %2976, i64 768
  %3183 = load <8 x double>, ptr %3182, align 64, !tbaa !26
  %3184 = fneg <8 x double> %3183
  %3185 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3184, <8 x double> %2983, <8 x double> %3181)
  %3186 = fmul <8 x double> %3170, %3185
  %3187 = fsub <8 x double> %3019, %3186
  %3188 = select <8 x i1> %3158, <8 x double> %3019, <8 x double> %3187
  %3189 = fsub <8 x double> %3004, %3160
  br label %3190

3190:                                             ; preds = %2972, %3151
  %3191 = phi <8 x double> [ %3020, %2972 ], [ %3189, %3151 ]
  %3192 = phi <8 x double> [ %3028, %2972 ], [ %3163, %3151 ]
  %3193 = phi <8 x double> [ %3009, %2972 ], [ %3160, %3151 ]
  %3194 = phi <8 x double> [ %3019, %2972 ], [ %3188, %3151 ]
  store <8 x double> %3191, ptr %3022, align 64, !tbaa !26
  %3195 = getelementptr inbounds nuw i8, ptr %2976, i64 3136
  store <8 x double> %3193, ptr %3195, align 64, !tbaa !26
  %3196 = getelementptr inbounds nuw i8, ptr %2976, i64 3264
  store <8 x double> %3001, ptr %3196, align 64, !tbaa !26
  %3197 = getelementptr inbounds nuw i8, ptr %2976, i64 3456
  store <8 x double> %2978, ptr %3197, align 64, !tbaa !26
  %3198 = getelementptr inbounds nuw i8, ptr %2976, i64 3520
  store <8 x double> %2983, ptr %3198, align 64, !tbaa !26
  %3199 = getelementptr inbounds nuw i8, ptr %2976, i64 6976
  %3200 = load <8 x double>, ptr %3199, align 64, !tbaa !26
  %3201 = getelementptr inbounds nuw i8, ptr %2976, i64 7040
  %3202 = load <8 x double>, ptr %3201, align 64, !tbaa !26
  %3203 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3200, <8 x double> %2983, <8 x double> %3202)
  %3204 = getelementptr inbounds nuw i8, ptr %2976, i64 6336
  %3205 = load <8 x double>, ptr %3204, align 64, !tbaa !26
  %3206 = getelementptr inbounds nuw i8, ptr %2976, i64 4096
  %3207 = load <8 x double>, ptr %3206, align 64, !tbaa !26
  %3208 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2991, <8 x double> %3207, <8 x double> %3205)
  %3209 = getelementptr inbounds nuw i8, ptr %2976, i64 4864
  %3210 = load <8 x double>, ptr %3209, align 64, !tbaa !26
  %3211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2997, <8 x double> %3210, <8 x double> %3208)
  %3212 = fdiv <8 x double> %3211, %3000
  %3213 = getelementptr inbounds nuw i8, ptr %2976, i64 3328
  store <8 x double> %3212, ptr %3213, align 64, !tbaa !26
  %3214 = getelementptr inbounds nuw i8, ptr %2976, i64 4160
  %3215 = load <8 x double>, ptr %3214, align 64, !tbaa !26
  %3216 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2991, <8 x double> %3215, <8 x double> %3194)
  %3217 = getelementptr inbounds nuw i8, ptr %2976, i64 4928
  %3218 = load <8 x double>, ptr %3217, align 64, !tbaa !26
  %3219 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2997, <8 x double> %3218, <8 x double> %3216)
  %3220 = fdiv <8 x double> %3219, %3000
  %3221 = getelementptr inbounds nuw i8, ptr %2976, i64 3392
  store <8 x double> %3220, ptr %3221, align 64, !tbaa !26
  %3222 = getelementptr inbounds nuw i8, ptr %2976, i64 4352
  %3223 = load <8 x double>, ptr %3222, align 64, !tbaa !26
  %3224 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2991, <8 x double> %3223, <8 x double> %3203)
  %3225 = getelementptr inbounds nuw i8, ptr %2976, i64 5120
  %3226 = load <8 x double>, ptr %3225, align 64, !tbaa !26
  %3227 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2997, <8 x double> %3226, <8 x double> %3224)
  %3228 = fdiv <8 x double> %3227, %3000
  %3229 = getelementptr inbounds nuw i8, ptr %2976, i64 3584
  store <8 x double> %3228, ptr %3229, align 64, !tbaa !26
  %3230 = fcmp ogt <8 x double> %2974, %3192
  %3231 = select <8 x i1> %3230, <8 x double> %2974, <8 x double> %3192
  %3232 = add nuw nsw i64 %2973, 1
  %3233 = load i64, ptr %166, align 8, !tbaa !20
  %3234 = icmp slt i64 %3232, %3233
  br i1 %3234, label %2972, label %3235, !llvm.loop !117

3235:                                             ; preds = %3190, %2786
  %3236 = phi i64 [ %2789, %2786 ], [ %3233, %3190 ]
  %3237 = phi <8 x double> [ zeroinitializer, %2786 ], [ %3231, %3190 ]
  %3238 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %3239 = fadd <8 x double> %3238, splat (double 1.000000e+00)
  store <8 x double> %3239, ptr %188, align 64, !tbaa !26
  %3240 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %3241 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %3242 = fcmp olt <8 x double> %3237, %3241
  %3243 = load i64, ptr %226, align 32, !tbaa !24
  %3244 = sitofp i64 %3243 to double
  %3245 = insertelement <8 x double> poison, double %3244, i64 0
  %3246 = shufflevector <8 x double> %3245, <8 x double> poison, <8 x i32> zeroinitializer
  %3247 = fcmp oge <8 x double> %3239, %3246
  %3248 = or <8 x i1> %3242, %3247
  %3249 = select <8 x i1> %3248, <8 x i64> %3240, <8 x i64> zeroinitializer
  store <8 x i64> %3249, ptr %155, align 64, !tbaa !26
  %3250 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3249)
  %3251 = icmp eq i64 %3250, 0
  br i1 %3251, label %546, label %3252, !llvm.loop !55

3252:                                             ; preds = %3235
  %3253 = icmp sgt i64 %3236, 0
  br i1 %3253, label %3254, label %3256

3254:                                             ; preds = %3252
  %3255 = icmp eq <8 x i64> %3249, zeroinitializer
  br label %3555

3256:                                             ; preds = %3603, %3252
  %3257 = phi i64 [ %3236, %3252 ], [ %3609, %3603 ]
  %3258 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %3259 = fadd <8 x double> %3258, splat (double 1.000000e+00)
  %3260 = icmp eq <8 x i64> %3249, zeroinitializer
  %3261 = select <8 x i1> %3260, <8 x double> %3258, <8 x double> %3259
  store <8 x double> %3261, ptr %227, align 64, !tbaa !26
  %3262 = fcmp ogt <8 x double> %3261, splat (double 4.000000e+01)
  %3263 = select <8 x i1> %3262, <8 x i64> %3249, <8 x i64> zeroinitializer
  %3264 = xor <8 x i64> %3263, %3249
  %3265 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %3266 = fadd <8 x double> %3265, splat (double 1.000000e+00)
  %3267 = icmp eq <8 x i64> %3263, zeroinitializer
  %3268 = select <8 x i1> %3267, <8 x double> %3265, <8 x double> %3266
  store <8 x double> %3268, ptr %149, align 64, !tbaa !26
  %3269 = load <8 x double>, ptr %216, align 64, !tbaa !26
  %3270 = load <8 x double>, ptr %228, align 64, !tbaa !26
  %3271 = fsub <8 x double> %3269, %3270
  %3272 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3271)
  %3273 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %3274 = fmul <8 x double> %3273, splat (double 1.500000e+00)
  %3275 = fcmp ogt <8 x double> %3272, %3274
  %3276 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %3277 = fcmp ogt <8 x double> %3276, splat (double 2.000000e-03)
  %3278 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %3279 = fcmp oeq <8 x double> %3278, zeroinitializer
  %3280 = and <8 x i1> %3275, %3279
  %3281 = and <8 x i1> %3277, %3280
  %3282 = fdiv <8 x double> %3273, %3272
  %3283 = select <8 x i1> %3281, <8 x i64> %3264, <8 x i64> zeroinitializer
  %3284 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %3285 = fcmp ogt <8 x double> %3284, %3276
  %3286 = select <8 x i1> %3285, <8 x double> %3284, <8 x double> %3276
  %3287 = select <8 x i1> %3281, <8 x double> zeroinitializer, <8 x double> %3286
  %3288 = icmp eq <8 x i64> %3283, zeroinitializer
  %3289 = select <8 x i1> %3288, <8 x double> %3284, <8 x double> %3287
  store <8 x double> %3289, ptr %165, align 64, !tbaa !26
  %3290 = fcmp ogt <8 x double> %3282, splat (double 5.000000e-02)
  %3291 = select <8 x i1> %3290, <8 x double> %3282, <8 x double> splat (double 5.000000e-02)
  %3292 = fcmp olt <8 x double> %3291, splat (double 0x3FEE666666666666)
  %3293 = select <8 x i1> %3292, <8 x double> %3291, <8 x double> splat (double 0x3FEE666666666666)
  %3294 = fmul <8 x double> %3276, %3293
  %3295 = fcmp ogt <8 x double> %3294, splat (double 0x3EB0C6F7A0B5ED8D)
  %3296 = select <8 x i1> %3295, <8 x double> %3294, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3297 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3298 = select <8 x i1> %3288, <8 x double> %3297, <8 x double> %3296
  store <8 x double> %3298, ptr %161, align 64, !tbaa !26
  %3299 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %3300 = fadd <8 x double> %3299, splat (double 1.000000e+00)
  %3301 = select <8 x i1> %3288, <8 x double> %3299, <8 x double> %3300
  store <8 x double> %3301, ptr %146, align 64, !tbaa !26
  %3302 = xor <8 x i64> %3283, %3264
  %3303 = icmp sgt i64 %3257, 0
  br i1 %3303, label %3304, label %3396

3304:                                             ; preds = %3256
  %3305 = load ptr, ptr %151, align 8, !tbaa !28
  %3306 = fcmp ogt <8 x double> %3276, splat (double 0x3E7AD7F29ABCAF48)
  %3307 = fcmp ogt <8 x double> %3276, splat (double 1.000000e-05)
  %3308 = fcmp ogt <8 x double> %3276, splat (double 1.000000e-04)
  br label %3309

3309:                                             ; preds = %3304, %3309
  %3310 = phi i64 [ 0, %3304 ], [ %3392, %3309 ]
  %3311 = phi <8 x double> [ splat (double 1.000000e+00), %3304 ], [ %3391, %3309 ]
  %3312 = phi <8 x i64> [ zeroinitializer, %3304 ], [ %3339, %3309 ]
  %3313 = phi <8 x i64> [ zeroinitializer, %3304 ], [ %3388, %3309 ]
  %3314 = getelementptr inbounds nuw %struct.Piece, ptr %3305, i64 %3310
  %3315 = getelementptr inbounds nuw i8, ptr %3314, i64 3072
  %3316 = load <8 x double>, ptr %3315, align 64, !tbaa !26
  %3317 = getelementptr inbounds nuw i8, ptr %3314, i64 3840
  %3318 = load <8 x double>, ptr %3317, align 64, !tbaa !26
  %3319 = getelementptr inbounds nuw i8, ptr %3314, i64 7360
  %3320 = load <8 x i64>, ptr %3319, align 64, !tbaa !26
  %3321 = xor <8 x i64> %3320, splat (i64 -1)
  %3322 = getelementptr inbounds nuw i8, ptr %3314, i64 896
  %3323 = load <8 x double>, ptr %3322, align 64, !tbaa !26
  %3324 = fmul <8 x double> %3323, splat (double 1.000000e-04)
  %3325 = fcmp ogt <8 x double> %3324, splat (double 0x3E7AD7F29ABCAF48)
  %3326 = fneg <8 x double> %3324
  %3327 = select <8 x i1> %3325, <8 x double> %3326, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3328 = fcmp olt <8 x double> %3316, %3327
  %3329 = select <8 x i1> %3328, <8 x i64> %3321, <8 x i64> zeroinitializer
  %3330 = fcmp ole <8 x double> %3318, zeroinitializer
  %3331 = select <8 x i1> %3330, <8 x i64> %3329, <8 x i64> zeroinitializer
  %3332 = getelementptr inbounds nuw i8, ptr %3314, i64 832
  %3333 = load <8 x double>, ptr %3332, align 64, !tbaa !26
  %3334 = fmul <8 x double> %3333, splat (double -3.000000e-07)
  %3335 = fcmp olt <8 x double> %3316, %3334
  %3336 = select <8 x i1> %3306, <8 x i1> %3335, <8 x i1> zeroinitializer
  %3337 = select <8 x i1> %3336, <8 x i64> %3331, <8 x i64> zeroinitializer
  %3338 = or <8 x i64> %3337, %3313
  %3339 = or <8 x i64> %3337, %3312
  %3340 = fcmp olt <8 x double> %3311, splat (double 3.000000e-01)
  %3341 = icmp eq <8 x i64> %3337, zeroinitializer
  %3342 = select <8 x i1> %3341, <8 x i1> splat (i1 true), <8 x i1> %3340
  %3343 = select <8 x i1> %3342, <8 x double> %3311, <8 x double> splat (double 3.000000e-01)
  %3344 = xor <8 x i64> %3331, splat (i64 -1)
  %3345 = and <8 x i64> %3329, %3344
  %3346 = select <8 x i1> %3307, <8 x i64> %3345, <8 x i64> zeroinitializer
  %3347 = fsub <8 x double> %3318, %3316
  %3348 = fdiv <8 x double> %3318, %3347
  %3349 = or <8 x i64> %3338, %3346
  %3350 = fcmp olt <8 x double> %3343, %3348
  %3351 = icmp eq <8 x i64> %3346, zeroinitializer
  %3352 = select <8 x i1> %3351, <8 x i1> splat (i1 true), <8 x i1> %3350
  %3353 = select <8 x i1> %3352, <8 x double> %3343, <8 x double> %3348
  %3354 = getelementptr inbounds nuw i8, ptr %3314, i64 3776
  %3355 = load <8 x double>, ptr %3354, align 64, !tbaa !26
  %3356 = getelementptr inbounds nuw i8, ptr %3314, i64 3008
  %3357 = load <8 x double>, ptr %3356, align 64, !tbaa !26
  %3358 = getelementptr inbounds nuw i8, ptr %3314, i64 7296
  %3359 = load <8 x double>, ptr %3358, align 64, !tbaa !26
  %3360 = fcmp oeq <8 x double> %3359, zeroinitializer
  %3361 = getelementptr inbounds nuw i8, ptr %3314, i64 1472
  %3362 = load <8 x double>, ptr %3361, align 64, !tbaa !26
  %3363 = fmul <8 x double> %3362, splat (double 0x3FEFF7CED916872B)
  %3364 = fcmp olt <8 x double> %3357, %3363
  %3365 = and <8 x i1> %3360, %3364
  %3366 = and <8 x i1> %3308, %3365
  %3367 = fsub <8 x double> %3355, %3362
  %3368 = fsub <8 x double> %3355, %3357
  %3369 = fdiv <8 x double> %3367, %3368
  %3370 = fcmp uge <8 x double> %3353, %3369
  %3371 = select <8 x i1> %3366, <8 x i1> %3370, <8 x i1> zeroinitializer
  %3372 = select <8 x i1> %3371, <8 x double> %3369, <8 x double> %3353
  %3373 = fcmp oeq <8 x double> %3359, splat (double 1.000000e+00)
  %3374 = getelementptr inbounds nuw i8, ptr %3314, i64 3264
  %3375 = load <8 x double>, ptr %3374, align 64, !tbaa !26
  %3376 = getelementptr inbounds nuw i8, ptr %3314, i64 1600
  %3377 = load <8 x double>, ptr %3376, align 64, !tbaa !26
  %3378 = fmul <8 x double> %3377, splat (double 1.000100e+00)
  %3379 = fcmp ogt <8 x double> %3375, %3378
  %3380 = and <8 x i1> %3373, %3379
  %3381 = and <8 x i1> %3308, %3380
  %3382 = getelementptr inbounds nuw i8, ptr %3314, i64 4032
  %3383 = load <8 x double>, ptr %3382, align 64, !tbaa !26
  %3384 = fsub <8 x double> %3377, %3383
  %3385 = fsub <8 x double> %3375, %3383
  %3386 = fdiv <8 x double> %3384, %3385
  %3387 = select <8 x i1> %3380, <8 x i1> %3308, <8 x i1> %3366
  %3388 = select <8 x i1> %3387, <8 x i64> splat (i64 -1), <8 x i64> %3349
  %3389 = fcmp uge <8 x double> %3372, %3386
  %3390 = select <8 x i1> %3381, <8 x i1> %3389, <8 x i1> zeroinitializer
  %3391 = select <8 x i1> %3390, <8 x double> %3386, <8 x double> %3372
  %3392 = add nuw nsw i64 %3310, 1
  %3393 = icmp eq i64 %3392, %3257
  br i1 %3393, label %3394, label %3309, !llvm.loop !118

3394:                                             ; preds = %3309
  %3395 = icmp eq <8 x i64> %3339, zeroinitializer
  br label %3396

3396:                                             ; preds = %3394, %3256
  %3397 = phi <8 x i64> [ zeroinitializer, %3256 ], [ %3388, %3394 ]
  %3398 = phi <8 x i1> [ splat (i1 true), %3256 ], [ %3395, %3394 ]
  %3399 = phi <8 x double> [ splat (double 1.000000e+00), %3256 ], [ %3391, %3394 ]
  %3400 = and <8 x i64> %3397, %3302
  %3401 = fcmp ogt <8 x double> %3289, %3276
  %3402 = select <8 x i1> %3401, <8 x double> %3289, <8 x double> %3276
  %3403 = select <8 x i1> %3398, <8 x double> %3402, <8 x double> zeroinitializer
  %3404 = icmp eq <8 x i64> %3400, zeroinitializer
  %3405 = select <8 x i1> %3404, <8 x double> %3289, <8 x double> %3403
  %3406 = fcmp ogt <8 x double> %3399, splat (double 5.000000e-02)
  %3407 = select <8 x i1> %3406, <8 x double> %3399, <8 x double> splat (double 5.000000e-02)
  %3408 = fcmp olt <8 x double> %3407, splat (double 0x3FEE666666666666)
  %3409 = select <8 x i1> %3408, <8 x double> %3407, <8 x double> splat (double 0x3FEE666666666666)
  %3410 = fmul <8 x double> %3276, %3409
  %3411 = fcmp ogt <8 x double> %3410, splat (double 0x3EB0C6F7A0B5ED8D)
  %3412 = select <8 x i1> %3411, <8 x double> %3410, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3413 = select <8 x i1> %3404, <8 x double> %3298, <8 x double> %3412
  %3414 = fadd <8 x double> %3301, splat (double 1.000000e+00)
  %3415 = select <8 x i1> %3404, <8 x double> %3301, <8 x double> %3414
  %3416 = xor <8 x i64> %3400, %3302
  %3417 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %3418 = fmul <8 x double> %3417, splat (double 5.000000e-01)
  %3419 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %3420 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %3421 = fneg <8 x double> %3418
  %3422 = icmp eq <8 x i64> %3420, zeroinitializer
  %3423 = select <8 x i1> %3422, <8 x double> %3421, <8 x double> %3418
  %3424 = fadd <8 x double> %3419, %3423
  %3425 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %3426 = fsub <8 x double> %3425, %3424
  %3427 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %3428 = fsub <8 x double> %3427, %3424
  %3429 = fneg <8 x double> %3426
  %3430 = select <8 x i1> %3422, <8 x double> %3429, <8 x double> %3426
  %3431 = fneg <8 x double> %3428
  %3432 = select <8 x i1> %3422, <8 x double> %3431, <8 x double> %3428
  %3433 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3434 = fcmp oeq <8 x double> %3433, zeroinitializer
  %3435 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3436 = fcmp oeq <8 x double> %3435, zeroinitializer
  %3437 = and <8 x i1> %3434, %3436
  %3438 = fcmp olt <8 x double> %3430, splat (double -1.000000e-03)
  %3439 = and <8 x i1> %3437, %3438
  %3440 = fcmp ogt <8 x double> %3432, splat (double 4.000000e-03)
  %3441 = and <8 x i1> %3440, %3439
  %3442 = and <8 x i1> %3277, %3441
  %3443 = fsub <8 x double> %3430, %3432
  %3444 = fdiv <8 x double> %3430, %3443
  %3445 = select <8 x i1> %3442, <8 x i64> %3416, <8 x i64> zeroinitializer
  %3446 = fcmp ogt <8 x double> %3405, %3276
  %3447 = icmp eq <8 x i64> %3445, zeroinitializer
  %3448 = select <8 x i1> %3447, <8 x i1> splat (i1 true), <8 x i1> %3446
  %3449 = select <8 x i1> %3448, <8 x double> %3405, <8 x double> %3276
  store <8 x double> %3449, ptr %165, align 64, !tbaa !26
  %3450 = fcmp ogt <8 x double> %3444, splat (double 5.000000e-02)
  %3451 = select <8 x i1> %3450, <8 x double> %3444, <8 x double> splat (double 5.000000e-02)
  %3452 = fcmp olt <8 x double> %3451, splat (double 0x3FEE666666666666)
  %3453 = select <8 x i1> %3452, <8 x double> %3451, <8 x double> splat (double 0x3FEE666666666666)
  %3454 = fmul <8 x double> %3276, %3453
  %3455 = fcmp ogt <8 x double> %3454, splat (double 0x3EB0C6F7A0B5ED8D)
  %3456 = select <8 x i1> %3455, <8 x double> %3454, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3457 = select <8 x i1> %3447, <8 x double> %3413, <8 x double> %3456
  store <8 x double> %3457, ptr %161, align 64, !tbaa !26
  %3458 = fadd <8 x double> %3415, splat (double 1.000000e+00)
  %3459 = select <8 x i1> %3447, <8 x double> %3415, <8 x double> %3458
  store <8 x double> %3459, ptr %146, align 64, !tbaa !26
  %3460 = xor <8 x i64> %3445, %3416
  %3461 = load <8 x double>, ptr %231, align 64, !tbaa !26
  %3462 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %3463 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %3464 = fsub <8 x double> %3462, %3463
  %3465 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %3466 = fcmp une <8 x double> %3465, splat (double 1.000000e+00)
  %3467 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %3468 = fsub <8 x double> %3425, %3467
  %3469 = select <8 x i1> %3466, <8 x double> splat (double -1.000000e+00), <8 x double> %3468
  %3470 = fcmp une <8 x double> %3465, splat (double 2.000000e+00)
  %3471 = fsub <8 x double> %3461, %3467
  %3472 = select <8 x i1> %3470, <8 x double> %3469, <8 x double> %3471
  %3473 = fcmp une <8 x double> %3465, splat (double 3.000000e+00)
  %3474 = fsub <8 x double> %3464, %3467
  %3475 = select <8 x i1> %3473, <8 x double> %3472, <8 x double> %3474
  %3476 = fcmp une <8 x double> %3465, splat (double 4.000000e+00)
  %3477 = fsub <8 x double> %3467, %3464
  %3478 = select <8 x i1> %3476, <8 x double> %3475, <8 x double> %3477
  br i1 %3303, label %3479, label %3511

3479:                                             ; preds = %3396
  %3480 = load ptr, ptr %151, align 8, !tbaa !28
  %3481 = and i64 %3257, 1
  %3482 = icmp eq i64 %3257, 1
  br i1 %3482, label %3501, label %3483

3483:                                             ; preds = %3479
  %3484 = and i64 %3257, 9223372036854775806
  br label %3485

3485:                                             ; preds = %3485, %3483
  %3486 = phi i64 [ 0, %3483 ], [ %3498, %3485 ]
  %3487 = phi <8 x double> [ splat (double 1.000000e+09), %3483 ], [ %3497, %3485 ]
  %3488 = phi i64 [ 0, %3483 ], [ %3499, %3485 ]
  %3489 = getelementptr inbounds nuw %struct.Piece, ptr %3480, i64 %3486, i32 35
  %3490 = load <8 x double>, ptr %3489, align 64, !tbaa !26
  %3491 = fcmp olt <8 x double> %3487, %3490
  %3492 = select <8 x i1> %3491, <8 x double> %3487, <8 x double> %3490
  %3493 = or disjoint i64 %3486, 1
  %3494 = getelementptr inbounds nuw %struct.Piece, ptr %3480, i64 %3493, i32 35
  %3495 = load <8 x double>, ptr %3494, align 64, !tbaa !26
  %3496 = fcmp olt <8 x double> %3492, %3495
  %3497 = select <8 x i1> %3496, <8 x double> %3492, <8 x double> %3495
  %3498 = add nuw nsw i64 %3486, 2
  %3499 = add i64 %3488, 2
  %3500 = icmp eq i64 %3499, %3484
  br i1 %3500, label %3501, label %3485, !llvm.loop !119

3501:                                             ; preds = %3485, %3479
  %3502 = phi <8 x double> [ poison, %3479 ], [ %3497, %3485 ]
  %3503 = phi i64 [ 0, %3479 ], [ %3498, %3485 ]
  %3504 = phi <8 x double> [ splat (double 1.000000e+09), %3479 ], [ %3497, %3485 ]
  %3505 = icmp eq i64 %3481, 0
  br i1 %3505, label %3511, label %3506

3506:                                             ; preds = %3501
  %3507 = getelementptr inbounds nuw %struct.Piece, ptr %3480, i64 %3503, i32 35
  %3508 = load <8 x double>, ptr %3507, align 64, !tbaa !26
  %3509 = fcmp olt <8 x double> %3504, %3508
  %3510 = select <8 x i1> %3509, <8 x double> %3504, <8 x double> %3508
  br label %3511

3511:                                             ; preds = %3506, %3501, %3396
  %3512 = phi <8 x double> [ splat (double 1.000000e+09), %3396 ], [ %3502, %3501 ], [ %3510, %3506 ]
  %3513 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %3514 = fsub <8 x double> %3513, %3463
  %3515 = fsub <8 x double> %3427, %3467
  %3516 = select <8 x i1> %3466, <8 x double> splat (double -1.000000e+00), <8 x double> %3515
  %3517 = fsub <8 x double> %3512, %3467
  %3518 = select <8 x i1> %3470, <8 x double> %3516, <8 x double> %3517
  %3519 = fsub <8 x double> %3514, %3467
  %3520 = select <8 x i1> %3473, <8 x double> %3518, <8 x double> %3519
  %3521 = fsub <8 x double> %3467, %3514
  %3522 = select <8 x i1> %3476, <8 x double> %3520, <8 x double> %3521
  %3523 = fcmp une <8 x double> %3465, zeroinitializer
  %3524 = fcmp oge <8 x double> %3276, splat (double 5.000000e-02)
  %3525 = and <8 x i1> %3524, %3523
  %3526 = fcmp olt <8 x double> %3478, zeroinitializer
  %3527 = and <8 x i1> %3525, %3526
  %3528 = fsub <8 x double> %3522, %3478
  %3529 = fmul <8 x double> %3528, splat (double 2.000000e-02)
  %3530 = fcmp ogt <8 x double> %3522, %3529
  %3531 = and <8 x i1> %3527, %3530
  %3532 = fsub <8 x double> %3478, %3522
  %3533 = fdiv <8 x double> %3478, %3532
  %3534 = fcmp olt <8 x double> %3533, splat (double 0x3FEE666666666666)
  %3535 = and <8 x i1> %3534, %3531
  %3536 = select <8 x i1> %3535, <8 x i64> %3460, <8 x i64> zeroinitializer
  %3537 = fcmp ogt <8 x double> %3449, %3276
  %3538 = icmp eq <8 x i64> %3536, zeroinitializer
  %3539 = select <8 x i1> %3538, <8 x i1> splat (i1 true), <8 x i1> %3537
  %3540 = select <8 x i1> %3539, <8 x double> %3449, <8 x double> %3276
  store <8 x double> %3540, ptr %165, align 64, !tbaa !26
  %3541 = fcmp ogt <8 x double> %3533, splat (double 5.000000e-02)
  %3542 = select <8 x i1> %3541, <8 x double> %3533, <8 x double> splat (double 5.000000e-02)
  %3543 = fcmp olt <8 x double> %3542, splat (double 0x3FEE666666666666)
  %3544 = select <8 x i1> %3543, <8 x double> %3542, <8 x double> splat (double 0x3FEE666666666666)
  %3545 = fmul <8 x double> %3276, %3544
  %3546 = fcmp ogt <8 x double> %3545, splat (double 0x3EB0C6F7A0B5ED8D)
  %3547 = select <8 x i1> %3546, <8 x double> %3545, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3548 = select <8 x i1> %3538, <8 x double> %3457, <8 x double> %3547
  store <8 x double> %3548, ptr %161, align 64, !tbaa !26
  %3549 = fadd <8 x double> %3459, splat (double 1.000000e+00)
  %3550 = select <8 x i1> %3538, <8 x double> %3459, <8 x double> %3549
  store <8 x double> %3550, ptr %146, align 64, !tbaa !26
  %3551 = xor <8 x i64> %3536, %3460
  %3552 = or <8 x i64> %3551, %3263
  %3553 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3552)
  %3554 = icmp eq i64 %3553, 0
  br i1 %3554, label %546, label %3611

3555:                                             ; preds = %3254, %3603
  %3556 = phi i64 [ 0, %3254 ], [ %3608, %3603 ]
  %3557 = load ptr, ptr %151, align 8, !tbaa !28
  %3558 = getelementptr inbounds nuw %struct.Piece, ptr %3557, i64 %3556
  %3559 = getelementptr inbounds nuw i8, ptr %3558, i64 7560
  %3560 = load ptr, ptr %3559, align 8, !tbaa !58
  %3561 = load <8 x double>, ptr %3560, align 64, !tbaa !26
  %3562 = getelementptr inbounds nuw i8, ptr %3558, i64 1344
  %3563 = load <8 x double>, ptr %3562, align 64, !tbaa !26
  %3564 = getelementptr inbounds nuw i8, ptr %3560, i64 64
  %3565 = load <8 x double>, ptr %3564, align 64, !tbaa !26
  %3566 = fsub <8 x double> %3565, %3561
  %3567 = fneg <8 x double> %3563
  %3568 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3567, <8 x double> %3566, <8 x double> %3561)
  %3569 = getelementptr inbounds nuw i8, ptr %3558, i64 7552
  %3570 = load i64, ptr %3569, align 64, !tbaa !31
  %3571 = icmp eq i64 %3570, 0
  br i1 %3571, label %3603, label %3572

3572:                                             ; preds = %3555
  %3573 = getelementptr <8 x double>, ptr %3560, i64 %3570
  %3574 = getelementptr i8, ptr %3573, i64 -64
  %3575 = load <8 x double>, ptr %3574, align 64, !tbaa !26
  %3576 = load <8 x double>, ptr %3573, align 64, !tbaa !26
  %3577 = getelementptr inbounds nuw i8, ptr %3558, i64 2880
  %3578 = load <8 x double>, ptr %3577, align 64, !tbaa !26
  %3579 = getelementptr inbounds nuw i8, ptr %3558, i64 2944
  %3580 = load <8 x double>, ptr %3579, align 64, !tbaa !26
  %3581 = getelementptr inbounds nuw i8, ptr %3558, i64 64
  %3582 = load <8 x double>, ptr %3581, align 64, !tbaa !26
  %3583 = fsub <8 x double> %3580, %3582
  %3584 = fmul <8 x double> %3578, %3583
  %3585 = getelementptr inbounds nuw i8, ptr %3558, i64 576
  %3586 = load <8 x double>, ptr %3585, align 64, !tbaa !26
  %3587 = getelementptr inbounds nuw i8, ptr %3558, i64 2816
  %3588 = load <8 x double>, ptr %3587, align 64, !tbaa !26
  %3589 = fdiv <8 x double> %3586, %3588
  %3590 = getelementptr inbounds nuw i8, ptr %3558, i64 192
  %3591 = load <8 x double>, ptr %3590, align 64, !tbaa !26
  %3592 = getelementptr inbounds nuw i8, ptr %3558, i64 256
  %3593 = load <8 x double>, ptr %3592, align 64, !tbaa !26
  %3594 = getelementptr inbounds nuw i8, ptr %3558, i64 320
  %3595 = load <8 x double>, ptr %3594, align 64, !tbaa !26
  %3596 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3576, <8 x double> %3595, <8 x double> %3593)
  %3597 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3576, <8 x double> %3596, <8 x double> %3591)
  %3598 = fdiv <8 x double> %3597, %3584
  %3599 = fmul <8 x double> %3576, %3598
  %3600 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3589, <8 x double> %3575, <8 x double> %3599)
  %3601 = fadd <8 x double> %3589, %3598
  %3602 = fdiv <8 x double> %3600, %3601
  br label %3603

3603:                                             ; preds = %3555, %3572
  %3604 = phi <8 x double> [ %3602, %3572 ], [ %3568, %3555 ]
  %3605 = getelementptr inbounds nuw i8, ptr %3558, i64 7232
  %3606 = load <8 x double>, ptr %3605, align 64, !tbaa !26
  %3607 = select <8 x i1> %3255, <8 x double> %3606, <8 x double> %3604
  store <8 x double> %3607, ptr %3605, align 64, !tbaa !26
  %3608 = add nuw nsw i64 %3556, 1
  %3609 = load i64, ptr %166, align 8, !tbaa !20
  %3610 = icmp slt i64 %3608, %3609
  br i1 %3610, label %3555, label %3256, !llvm.loop !120

3611:                                             ; preds = %3511
  %3612 = icmp eq <8 x i64> %3552, zeroinitializer
  %3613 = select <8 x i1> %3612, <8 x double> %3270, <8 x double> %3269
  store <8 x double> %3613, ptr %228, align 64, !tbaa !26
  %3614 = load <8 x double>, ptr %175, align 64, !tbaa !26
  %3615 = select <8 x i1> %3612, <8 x double> %3614, <8 x double> %3425
  store <8 x double> %3615, ptr %175, align 64, !tbaa !26
  %3616 = select <8 x i1> %3612, <8 x double> %3425, <8 x double> %3427
  store <8 x double> %3616, ptr %174, align 64, !tbaa !26
  %3617 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %3618 = select <8 x i1> %3612, <8 x double> %3617, <8 x double> %3462
  store <8 x double> %3618, ptr %260, align 64, !tbaa !26
  %3619 = select <8 x i1> %3612, <8 x double> %3462, <8 x double> %3513
  store <8 x double> %3619, ptr %261, align 64, !tbaa !26
  %3620 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %3621 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %3622 = select <8 x i1> %3612, <8 x double> %3621, <8 x double> %3620
  store <8 x double> %3622, ptr %262, align 64, !tbaa !26
  %3623 = load <8 x double>, ptr %264, align 64, !tbaa !26
  %3624 = select <8 x i1> %3612, <8 x double> %3620, <8 x double> %3623
  store <8 x double> %3624, ptr %263, align 64, !tbaa !26
  %3625 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %3626 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %3627 = select <8 x i1> %3612, <8 x double> %3626, <8 x double> %3625
  store <8 x double> %3627, ptr %265, align 64, !tbaa !26
  %3628 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %3629 = select <8 x i1> %3612, <8 x double> %3625, <8 x double> %3628
  store <8 x double> %3629, ptr %266, align 64, !tbaa !26
  %3630 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %3631 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %3632 = select <8 x i1> %3612, <8 x double> %3631, <8 x double> %3630
  store <8 x double> %3632, ptr %268, align 64, !tbaa !26
  %3633 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %3634 = select <8 x i1> %3612, <8 x double> %3630, <8 x double> %3633
  store <8 x double> %3634, ptr %269, align 64, !tbaa !26
  %3635 = load <8 x double>, ptr %272, align 64, !tbaa !26
  %3636 = load <8 x double>, ptr %271, align 64, !tbaa !26
  %3637 = select <8 x i1> %3612, <8 x double> %3636, <8 x double> %3635
  store <8 x double> %3637, ptr %271, align 64, !tbaa !26
  %3638 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %3639 = select <8 x i1> %3612, <8 x double> %3635, <8 x double> %3638
  store <8 x double> %3639, ptr %272, align 64, !tbaa !26
  %3640 = xor <8 x i64> %3552, splat (i64 -1)
  br i1 %3303, label %3641, label %4016

3641:                                             ; preds = %3611, %3981
  %3642 = phi i64 [ %3993, %3981 ], [ 0, %3611 ]
  %3643 = load ptr, ptr %151, align 8, !tbaa !28
  %3644 = getelementptr inbounds nuw %struct.Piece, ptr %3643, i64 %3642
  %3645 = getelementptr inbounds nuw i8, ptr %3644, i64 1664
  %3646 = load <8 x double>, ptr %3645, align 64, !tbaa !26
  %3647 = fcmp ogt <8 x double> %3646, zeroinitializer
  %3648 = bitcast <8 x i1> %3647 to i8
  %3649 = icmp eq i8 %3648, 0
  %3650 = load i64, ptr %141, align 16, !tbaa !21
  br i1 %3649, label %3908, label %3651

3651:                                             ; preds = %3641
  %3652 = add i64 %3650, -1
  %3653 = getelementptr inbounds nuw i8, ptr %3644, i64 4416
  %3654 = load <8 x double>, ptr %3653, align 64, !tbaa !26
  %3655 = getelementptr inbounds nuw i8, ptr %3644, i64 3648
  %3656 = load <8 x double>, ptr %3655, align 64, !tbaa !26
  %3657 = getelementptr inbounds nuw i8, ptr %3644, i64 7552
  %3658 = load i64, ptr %3657, align 64, !tbaa !31
  %3659 = icmp sgt i64 %3650, %3658
  br i1 %3659, label %3668, label %3660

3660:                                             ; preds = %3651
  %3661 = getelementptr inbounds nuw i8, ptr %3644, i64 7648
  %3662 = load ptr, ptr %3661, align 32, !tbaa !72
  %3663 = getelementptr inbounds <8 x double>, ptr %3662, i64 %3652
  %3664 = load <8 x double>, ptr %3663, align 64, !tbaa !26
  %3665 = getelementptr inbounds nuw i8, ptr %3644, i64 1536
  %3666 = load <8 x double>, ptr %3665, align 64, !tbaa !26
  %3667 = fmul <8 x double> %3664, %3666
  br label %3677

3668:                                             ; preds = %3651
  %3669 = getelementptr inbounds nuw i8, ptr %3644, i64 1536
  %3670 = load <8 x double>, ptr %3669, align 64, !tbaa !26
  %3671 = getelementptr inbounds nuw i8, ptr %3644, i64 7648
  %3672 = load ptr, ptr %3671, align 32, !tbaa !72
  %3673 = getelementptr inbounds <8 x double>, ptr %3672, i64 %3652
  %3674 = load <8 x double>, ptr %3673, align 64, !tbaa !26
  %3675 = fsub <8 x double> %3654, %3670
  %3676 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3674, <8 x double> %3675, <8 x double> %3670)
  br label %3677

3677:                                             ; preds = %3668, %3660
  %3678 = phi <8 x double> [ %3666, %3660 ], [ %3670, %3668 ]
  %3679 = phi <8 x double> [ %3667, %3660 ], [ %3676, %3668 ]
  %3680 = getelementptr inbounds nuw i8, ptr %3644, i64 3008
  %3681 = load <8 x double>, ptr %3680, align 64, !tbaa !26
  %3682 = fcmp ole <8 x double> %3679, %3681
  %3683 = getelementptr inbounds nuw i8, ptr %3644, i64 7296
  %3684 = load <8 x double>, ptr %3683, align 64, !tbaa !26
  %3685 = fcmp oeq <8 x double> %3684, zeroinitializer
  %3686 = select <8 x i1> %3685, <8 x i1> %3682, <8 x i1> zeroinitializer
  %3687 = select <8 x i1> %3686, <8 x i64> %3552, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %3688 = xor <8 x i64> %3687, %3552
  store <8 x i64> %3688, ptr %12, align 64, !tbaa !26
  %3689 = fsub <8 x double> %3654, %3656
  %3690 = getelementptr inbounds nuw i8, ptr %3644, i64 1536
  %3691 = fsub <8 x double> %3656, %3678
  %3692 = fdiv <8 x double> %3689, %3691
  %3693 = getelementptr inbounds nuw i8, ptr %3644, i64 7592
  %3694 = load ptr, ptr %3693, align 8, !tbaa !65
  %3695 = getelementptr inbounds <8 x double>, ptr %3694, i64 %3658
  %3696 = load <8 x double>, ptr %3695, align 64, !tbaa !26
  %3697 = getelementptr inbounds nuw i8, ptr %3644, i64 7600
  %3698 = load ptr, ptr %3697, align 16, !tbaa !48
  %3699 = getelementptr inbounds <8 x double>, ptr %3698, i64 %3658
  %3700 = load <8 x double>, ptr %3699, align 64, !tbaa !26
  %3701 = icmp eq <8 x i64> %3687, zeroinitializer
  %3702 = select <8 x i1> %3701, <8 x double> %3700, <8 x double> %3696
  store <8 x double> %3702, ptr %3699, align 64, !tbaa !26
  %3703 = load i64, ptr %3657, align 64, !tbaa !31
  %3704 = add nsw i64 %3703, 1
  %3705 = icmp slt i64 %3704, %3652
  br i1 %3705, label %3706, label %3710

3706:                                             ; preds = %3677
  %3707 = getelementptr inbounds nuw i8, ptr %3644, i64 7664
  br label %3750

3708:                                             ; preds = %3750
  %3709 = load i64, ptr %3657, align 64, !tbaa !31
  br label %3710

3710:                                             ; preds = %3708, %3677
  %3711 = phi i64 [ %3703, %3677 ], [ %3709, %3708 ]
  %3712 = phi <8 x double> [ %3696, %3677 ], [ %3755, %3708 ]
  %3713 = icmp sgt i64 %3650, %3711
  br i1 %3713, label %3721, label %3714

3714:                                             ; preds = %3710
  %3715 = getelementptr inbounds nuw i8, ptr %3644, i64 7648
  %3716 = load ptr, ptr %3715, align 32, !tbaa !72
  %3717 = getelementptr inbounds <8 x double>, ptr %3716, i64 %3652
  %3718 = load <8 x double>, ptr %3717, align 64, !tbaa !26
  %3719 = load <8 x double>, ptr %3690, align 64, !tbaa !26
  %3720 = fmul <8 x double> %3718, %3719
  br label %3729

3721:                                             ; preds = %3710
  %3722 = load <8 x double>, ptr %3690, align 64, !tbaa !26
  %3723 = getelementptr inbounds nuw i8, ptr %3644, i64 7648
  %3724 = load ptr, ptr %3723, align 32, !tbaa !72
  %3725 = getelementptr inbounds <8 x double>, ptr %3724, i64 %3652
  %3726 = load <8 x double>, ptr %3725, align 64, !tbaa !26
  %3727 = fsub <8 x double> %3656, %3722
  %3728 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3726, <8 x double> %3727, <8 x double> %3722)
  br label %3729

3729:                                             ; preds = %3721, %3714
  %3730 = phi <8 x double> [ %3720, %3714 ], [ %3728, %3721 ]
  %3731 = load ptr, ptr %3693, align 8, !tbaa !65
  %3732 = getelementptr inbounds <8 x double>, ptr %3731, i64 %3652
  %3733 = load <8 x double>, ptr %3732, align 64, !tbaa !26
  %3734 = load ptr, ptr %3697, align 16, !tbaa !48
  %3735 = getelementptr inbounds <8 x double>, ptr %3734, i64 %3652
  %3736 = fsub <8 x double> %3712, %3733
  %3737 = fsub <8 x double> %3679, %3730
  %3738 = load <8 x double>, ptr %3680, align 64, !tbaa !26
  %3739 = fsub <8 x double> %3738, %3730
  %3740 = fdiv <8 x double> %3737, %3739
  %3741 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3736, <8 x double> %3740, <8 x double> %3733)
  %3742 = load <8 x double>, ptr %3735, align 64, !tbaa !26
  %3743 = select <8 x i1> %3701, <8 x double> %3742, <8 x double> %3741
  store <8 x double> %3743, ptr %3735, align 64, !tbaa !26
  %3744 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3688)
  %3745 = icmp eq i64 %3744, 0
  br i1 %3745, label %3906, label %3746

3746:                                             ; preds = %3729
  %3747 = getelementptr inbounds nuw i8, ptr %3644, i64 7648
  %3748 = getelementptr inbounds nuw i8, ptr %3644, i64 3136
  %3749 = getelementptr inbounds nuw i8, ptr %3644, i64 832
  br label %3768

3750:                                             ; preds = %3706, %3750
  %3751 = phi i64 [ %3704, %3706 ], [ %3766, %3750 ]
  %3752 = phi <8 x double> [ %3696, %3706 ], [ %3755, %3750 ]
  %3753 = load ptr, ptr %3693, align 8, !tbaa !65
  %3754 = getelementptr inbounds <8 x double>, ptr %3753, i64 %3751
  %3755 = load <8 x double>, ptr %3754, align 64, !tbaa !26
  %3756 = load ptr, ptr %3697, align 16, !tbaa !48
  %3757 = getelementptr inbounds <8 x double>, ptr %3756, i64 %3751
  %3758 = fsub <8 x double> %3752, %3755
  %3759 = load ptr, ptr %3707, align 16, !tbaa !121
  %3760 = getelementptr inbounds <8 x double>, ptr %3759, i64 %3751
  %3761 = load <8 x double>, ptr %3760, align 64, !tbaa !26
  %3762 = fmul <8 x double> %3692, %3761
  %3763 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3758, <8 x double> %3762, <8 x double> %3755)
  %3764 = load <8 x double>, ptr %3757, align 64, !tbaa !26
  %3765 = select <8 x i1> %3701, <8 x double> %3764, <8 x double> %3763
  store <8 x double> %3765, ptr %3757, align 64, !tbaa !26
  %3766 = add nsw i64 %3751, 1
  %3767 = icmp eq i64 %3766, %3652
  br i1 %3767, label %3708, label %3750, !llvm.loop !122

3768:                                             ; preds = %3746, %3903
  %3769 = phi i64 [ 0, %3746 ], [ %3904, %3903 ]
  %3770 = getelementptr inbounds nuw i64, ptr %12, i64 %3769
  %3771 = load i64, ptr %3770, align 8, !tbaa !30
  %3772 = icmp eq i64 %3771, 0
  br i1 %3772, label %3903, label %3773

3773:                                             ; preds = %3768
  %3774 = load i64, ptr %141, align 16, !tbaa !21
  %3775 = load i64, ptr %3657, align 64, !tbaa !31
  %3776 = getelementptr inbounds nuw double, ptr %3690, i64 %3769
  %3777 = load double, ptr %3776, align 8, !tbaa !43
  %3778 = getelementptr inbounds nuw double, ptr %3680, i64 %3769
  %3779 = load double, ptr %3778, align 8, !tbaa !43
  %3780 = add nsw i64 %3774, -1
  %3781 = icmp sgt i64 %3774, %3775
  br i1 %3781, label %3782, label %3903

3782:                                             ; preds = %3773
  %3783 = getelementptr inbounds nuw double, ptr %3655, i64 %3769
  %3784 = load double, ptr %3783, align 8, !tbaa !43
  %3785 = getelementptr inbounds nuw double, ptr %3653, i64 %3769
  %3786 = load double, ptr %3785, align 8, !tbaa !43
  %3787 = load ptr, ptr %3747, align 32
  %3788 = getelementptr i8, ptr %3787, i64 64
  %3789 = getelementptr double, ptr %3788, i64 %3769
  %3790 = fsub double %3784, %3777
  %3791 = getelementptr double, ptr %3787, i64 %3769
  %3792 = fsub double %3786, %3777
  %3793 = load ptr, ptr %3693, align 8, !tbaa !65
  %3794 = getelementptr double, ptr %3793, i64 %3769
  %3795 = load ptr, ptr %3697, align 16, !tbaa !48
  %3796 = getelementptr double, ptr %3795, i64 %3769
  %3797 = getelementptr <8 x double>, ptr %3791, i64 %3780
  br label %3825

3798:                                             ; preds = %3871
  %3799 = getelementptr inbounds nuw double, ptr %3683, i64 %3769
  %3800 = load double, ptr %3799, align 8, !tbaa !43
  %3801 = fcmp ogt double %3800, 0.000000e+00
  %3802 = fcmp ogt double %3882, 0.000000e+00
  %3803 = select i1 %3801, i1 %3802, i1 false
  br i1 %3803, label %3804, label %3903

3804:                                             ; preds = %3798
  %3805 = getelementptr inbounds nuw double, ptr %3748, i64 %3769
  %3806 = getelementptr inbounds nuw double, ptr %3749, i64 %3769
  %3807 = sub i64 %3774, %3775
  %3808 = add i64 %3775, 1
  %3809 = and i64 %3807, 1
  %3810 = icmp eq i64 %3809, 0
  br i1 %3810, label %3820, label %3811

3811:                                             ; preds = %3804
  %3812 = load double, ptr %3805, align 8, !tbaa !43
  %3813 = load double, ptr %3806, align 8, !tbaa !43
  %3814 = fmul double %3882, %3813
  %3815 = fdiv double %3812, %3814
  %3816 = getelementptr <8 x double>, ptr %3796, i64 %3775
  %3817 = load double, ptr %3816, align 8, !tbaa !43
  %3818 = fmul double %3817, %3815
  store double %3818, ptr %3816, align 8, !tbaa !43
  %3819 = add nsw i64 %3775, 1
  br label %3820

3820:                                             ; preds = %3811, %3804
  %3821 = phi i64 [ %3775, %3804 ], [ %3819, %3811 ]
  %3822 = icmp eq i64 %3774, %3808
  br i1 %3822, label %3903, label %3823

3823:                                             ; preds = %3820
  %3824 = getelementptr i8, ptr %3796, i64 64
  br label %3885

3825:                                             ; preds = %3871, %3782
  %3826 = phi double [ 0.000000e+00, %3782 ], [ %3882, %3871 ]
  %3827 = phi i64 [ %3780, %3782 ], [ %3883, %3871 ]
  %3828 = icmp eq i64 %3827, %3780
  br i1 %3828, label %3829, label %3832

3829:                                             ; preds = %3825
  %3830 = load double, ptr %3797, align 8, !tbaa !43
  %3831 = tail call noundef double @llvm.fmuladd.f64(double %3830, double %3790, double %3777)
  br label %3843

3832:                                             ; preds = %3825
  %3833 = getelementptr <8 x double>, ptr %3789, i64 %3827
  %3834 = load double, ptr %3833, align 8, !tbaa !43
  %3835 = tail call noundef double @llvm.fmuladd.f64(double %3834, double %3790, double %3777)
  %3836 = getelementptr <8 x double>, ptr %3791, i64 %3827
  %3837 = load double, ptr %3836, align 8, !tbaa !43
  %3838 = tail call noundef double @llvm.fmuladd.f64(double %3837, double %3790, double %3777)
  %3839 = tail call noundef double @llvm.fmuladd.f64(double %3834, double %3792, double %3777)
  %3840 = fcmp ult double %3839, %3835
  br i1 %3840, label %3841, label %3843

3841:                                             ; preds = %3832
  %3842 = add nsw i64 %3827, 1
  br label %3843

3843:                                             ; preds = %3841, %3832, %3829
  %3844 = phi double [ %3838, %3841 ], [ %3838, %3832 ], [ %3831, %3829 ]
  %3845 = phi double [ %3835, %3841 ], [ %3835, %3832 ], [ %3779, %3829 ]
  %3846 = phi i64 [ %3842, %3841 ], [ %3827, %3832 ], [ %3780, %3829 ]
  %3847 = icmp sgt i64 %3846, %3775
  br i1 %3847, label %3848, label %3871

3848:                                             ; preds = %3843
  %3849 = load ptr, ptr %3693, align 8
  %3850 = getelementptr double, ptr %3849, i64 %3769
  br label %3851

3851:                                             ; preds = %3866, %3848
  %3852 = phi i64 [ %3846, %3848 ], [ %3869, %3866 ]
  %3853 = phi double [ 0.000000e+00, %3848 ], [ %3868, %3866 ]
  %3854 = phi double [ %3845, %3848 ], [ %3867, %3866 ]
  %3855 = getelementptr <8 x double>, ptr %3791, i64 %3852
  %3856 = load double, ptr %3855, align 8, !tbaa !43
  %3857 = tail call noundef double @llvm.fmuladd.f64(double %3856, double %3792, double %3777)
  %3858 = fcmp ogt double %3857, %3844
  br i1 %3858, label %3859, label %3871

3859:                                             ; preds = %3851
  %3860 = fcmp ogt double %3854, %3857
  br i1 %3860, label %3861, label %3866

3861:                                             ; preds = %3859
  %3862 = getelementptr <8 x double>, ptr %3850, i64 %3852
  %3863 = load double, ptr %3862, align 8, !tbaa !43
  %3864 = fsub double %3854, %3857
  %3865 = tail call double @llvm.fmuladd.f64(double %3863, double %3864, double %3853)
  br label %3866

3866:                                             ; preds = %3861, %3859
  %3867 = phi double [ %3857, %3861 ], [ %3854, %3859 ]
  %3868 = phi double [ %3865, %3861 ], [ %3853, %3859 ]
  %3869 = add nsw i64 %3852, -1
  %3870 = icmp sgt i64 %3869, %3775
  br i1 %3870, label %3851, label %3871, !llvm.loop !123

3871:                                             ; preds = %3866, %3851, %3843
  %3872 = phi double [ %3845, %3843 ], [ %3854, %3851 ], [ %3867, %3866 ]
  %3873 = phi double [ 0.000000e+00, %3843 ], [ %3853, %3851 ], [ %3868, %3866 ]
  %3874 = phi i64 [ %3846, %3843 ], [ %3852, %3851 ], [ %3775, %3866 ]
  %3875 = getelementptr <8 x double>, ptr %3794, i64 %3874
  %3876 = load double, ptr %3875, align 8, !tbaa !43
  %3877 = fsub double %3872, %3844
  %3878 = tail call double @llvm.fmuladd.f64(double %3876, double %3877, double %3873)
  %3879 = fsub double %3845, %3844
  %3880 = fdiv double %3878, %3879
  %3881 = getelementptr <8 x double>, ptr %3796, i64 %3827
  store double %3880, ptr %3881, align 8, !tbaa !43
  %3882 = fadd double %3826, %3878
  %3883 = add nsw i64 %3827, -1
  %3884 = icmp sgt i64 %3827, %3775
  br i1 %3884, label %3825, label %3798, !llvm.loop !124

3885:                                             ; preds = %3885, %3823
  %3886 = phi i64 [ %3821, %3823 ], [ %3901, %3885 ]
  %3887 = load double, ptr %3805, align 8, !tbaa !43
  %3888 = load double, ptr %3806, align 8, !tbaa !43
  %3889 = fmul double %3882, %3888
  %3890 = fdiv double %3887, %3889
  %3891 = getelementptr <8 x double>, ptr %3796, i64 %3886
  %3892 = load double, ptr %3891, align 8, !tbaa !43
  %3893 = fmul double %3892, %3890
  store double %3893, ptr %3891, align 8, !tbaa !43
  %3894 = load double, ptr %3805, align 8, !tbaa !43
  %3895 = load double, ptr %3806, align 8, !tbaa !43
  %3896 = fmul double %3882, %3895
  %3897 = fdiv double %3894, %3896
  %3898 = getelementptr <8 x double>, ptr %3824, i64 %3886
  %3899 = load double, ptr %3898, align 8, !tbaa !43
  %3900 = fmul double %3899, %3897
  store double %3900, ptr %3898, align 8, !tbaa !43
  %3901 = add nsw i64 %3886, 2
  %3902 = icmp eq i64 %3901, %3774
  br i1 %3902, label %3903, label %3885, !llvm.loop !125

3903:                                             ; preds = %3820, %3885, %3798, %3773, %3768
  %3904 = add nuw nsw i64 %3769, 1
  %3905 = icmp eq i64 %3904, 8
  br i1 %3905, label %3906, label %3768, !llvm.loop !126

3906:                                             ; preds = %3903, %3729
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  %3907 = load i64, ptr %141, align 16, !tbaa !21
  br label %3908

3908:                                             ; preds = %3641, %3906
  %3909 = phi i64 [ %3650, %3641 ], [ %3907, %3906 ]
  %3910 = icmp sgt i64 %3909, 0
  br i1 %3910, label %3911, label %3915

3911:                                             ; preds = %3908
  %3912 = getelementptr inbounds nuw i8, ptr %3644, i64 7576
  %3913 = getelementptr inbounds nuw i8, ptr %3644, i64 7568
  %3914 = getelementptr inbounds nuw i8, ptr %3644, i64 7560
  br label %3925

3915:                                             ; preds = %3925, %3908
  %3916 = load i64, ptr %142, align 8, !tbaa !22
  %3917 = icmp sgt i64 %3916, 0
  br i1 %3917, label %3918, label %3944

3918:                                             ; preds = %3915
  %3919 = getelementptr inbounds nuw i8, ptr %3644, i64 7744
  %3920 = getelementptr inbounds nuw i8, ptr %3644, i64 7736
  %3921 = getelementptr inbounds nuw i8, ptr %3644, i64 7728
  %3922 = getelementptr inbounds nuw i8, ptr %3644, i64 7696
  %3923 = getelementptr inbounds nuw i8, ptr %3644, i64 7688
  %3924 = getelementptr inbounds nuw i8, ptr %3644, i64 7680
  br label %3948

3925:                                             ; preds = %3911, %3925
  %3926 = phi i64 [ 0, %3911 ], [ %3941, %3925 ]
  %3927 = load ptr, ptr %3912, align 8, !tbaa !57
  %3928 = getelementptr inbounds nuw <8 x double>, ptr %3927, i64 %3926
  %3929 = load ptr, ptr %3913, align 16, !tbaa !47
  %3930 = getelementptr inbounds nuw <8 x double>, ptr %3929, i64 %3926
  %3931 = load <8 x double>, ptr %3930, align 64, !tbaa !26
  %3932 = load <8 x double>, ptr %3928, align 64, !tbaa !26
  %3933 = select <8 x i1> %3612, <8 x double> %3932, <8 x double> %3931
  store <8 x double> %3933, ptr %3928, align 64, !tbaa !26
  %3934 = load ptr, ptr %3913, align 16, !tbaa !47
  %3935 = getelementptr inbounds nuw <8 x double>, ptr %3934, i64 %3926
  %3936 = load ptr, ptr %3914, align 8, !tbaa !58
  %3937 = getelementptr inbounds nuw <8 x double>, ptr %3936, i64 %3926
  %3938 = load <8 x double>, ptr %3937, align 64, !tbaa !26
  %3939 = load <8 x double>, ptr %3935, align 64, !tbaa !26
  %3940 = select <8 x i1> %3612, <8 x double> %3939, <8 x double> %3938
  store <8 x double> %3940, ptr %3935, align 64, !tbaa !26
  %3941 = add nuw nsw i64 %3926, 1
  %3942 = load i64, ptr %141, align 16, !tbaa !21
  %3943 = icmp slt i64 %3941, %3942
  br i1 %3943, label %3925, label %3915, !llvm.loop !127

3944:                                             ; preds = %3948, %3915
  %3945 = getelementptr inbounds nuw i8, ptr %3644, i64 4480
  %3946 = getelementptr inbounds nuw i8, ptr %3644, i64 3712
  %3947 = getelementptr inbounds nuw i8, ptr %3644, i64 2944
  br label %3996

3948:                                             ; preds = %3918, %3948
  %3949 = phi i64 [ 0, %3918 ], [ %3978, %3948 ]
  %3950 = load ptr, ptr %3919, align 64, !tbaa !60
  %3951 = getelementptr inbounds nuw <8 x double>, ptr %3950, i64 %3949
  %3952 = load ptr, ptr %3920, align 8, !tbaa !50
  %3953 = getelementptr inbounds nuw <8 x double>, ptr %3952, i64 %3949
  %3954 = load <8 x double>, ptr %3953, align 64, !tbaa !26
  %3955 = load <8 x double>, ptr %3951, align 64, !tbaa !26
  %3956 = select <8 x i1> %3612, <8 x double> %3955, <8 x double> %3954
  store <8 x double> %3956, ptr %3951, align 64, !tbaa !26
  %3957 = load ptr, ptr %3920, align 8, !tbaa !50
  %3958 = getelementptr inbounds nuw <8 x double>, ptr %3957, i64 %3949
  %3959 = load ptr, ptr %3921, align 16, !tbaa !80
  %3960 = getelementptr inbounds nuw <8 x double>, ptr %3959, i64 %3949
  %3961 = load <8 x double>, ptr %3960, align 64, !tbaa !26
  %3962 = load <8 x double>, ptr %3958, align 64, !tbaa !26
  %3963 = select <8 x i1> %3612, <8 x double> %3962, <8 x double> %3961
  store <8 x double> %3963, ptr %3958, align 64, !tbaa !26
  %3964 = load ptr, ptr %3922, align 16, !tbaa !62
  %3965 = getelementptr inbounds nuw <8 x double>, ptr %3964, i64 %3949
  %3966 = load ptr, ptr %3923, align 8, !tbaa !51
  %3967 = getelementptr inbounds nuw <8 x double>, ptr %3966, i64 %3949
  %3968 = load <8 x double>, ptr %3967, align 64, !tbaa !26
  %3969 = load <8 x double>, ptr %3965, align 64, !tbaa !26
  %3970 = select <8 x i1> %3612, <8 x double> %3969, <8 x double> %3968
  store <8 x double> %3970, ptr %3965, align 64, !tbaa !26
  %3971 = load ptr, ptr %3923, align 8, !tbaa !51
  %3972 = getelementptr inbounds nuw <8 x double>, ptr %3971, i64 %3949
  %3973 = load ptr, ptr %3924, align 64, !tbaa !111
  %3974 = getelementptr inbounds nuw <8 x double>, ptr %3973, i64 %3949
  %3975 = load <8 x double>, ptr %3974, align 64, !tbaa !26
  %3976 = load <8 x double>, ptr %3972, align 64, !tbaa !26
  %3977 = select <8 x i1> %3612, <8 x double> %3976, <8 x double> %3975
  store <8 x double> %3977, ptr %3972, align 64, !tbaa !26
  %3978 = add nuw nsw i64 %3949, 1
  %3979 = load i64, ptr %142, align 8, !tbaa !22
  %3980 = icmp slt i64 %3978, %3979
  br i1 %3980, label %3948, label %3944, !llvm.loop !128

3981:                                             ; preds = %3996
  %3982 = getelementptr inbounds nuw i8, ptr %3644, i64 7424
  %3983 = getelementptr inbounds nuw i8, ptr %3644, i64 5696
  %3984 = load <8 x double>, ptr %3983, align 64, !tbaa !26
  %3985 = fcmp ogt <8 x double> %3984, zeroinitializer
  %3986 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %3987 = fcmp une <8 x double> %3986, splat (double 2.000000e+00)
  %3988 = and <8 x i1> %3985, %3987
  %3989 = select <8 x i1> %3988, <8 x i64> %3552, <8 x i64> zeroinitializer
  %3990 = load <8 x i64>, ptr %3982, align 64, !tbaa !26
  %3991 = and <8 x i64> %3990, %3640
  %3992 = or <8 x i64> %3989, %3991
  store <8 x i64> %3992, ptr %3982, align 64, !tbaa !26
  %3993 = add nuw nsw i64 %3642, 1
  %3994 = load i64, ptr %166, align 8, !tbaa !20
  %3995 = icmp slt i64 %3993, %3994
  br i1 %3995, label %3641, label %4008, !llvm.loop !129

3996:                                             ; preds = %3944, %3996
  %3997 = phi i64 [ 0, %3944 ], [ %4006, %3996 ]
  %3998 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3945, i64 0, i64 %3997
  %3999 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3946, i64 0, i64 %3997
  %4000 = load <8 x double>, ptr %3999, align 64, !tbaa !26
  %4001 = load <8 x double>, ptr %3998, align 64, !tbaa !26
  %4002 = select <8 x i1> %3612, <8 x double> %4001, <8 x double> %4000
  store <8 x double> %4002, ptr %3998, align 64, !tbaa !26
  %4003 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3947, i64 0, i64 %3997
  %4004 = load <8 x double>, ptr %4003, align 64, !tbaa !26
  %4005 = select <8 x i1> %3612, <8 x double> %4000, <8 x double> %4004
  store <8 x double> %4005, ptr %3999, align 64, !tbaa !26
  %4006 = add nuw nsw i64 %3997, 1
  %4007 = icmp eq i64 %4006, 12
  br i1 %4007, label %3981, label %3996, !llvm.loop !130

4008:                                             ; preds = %3981
  %4009 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %4010 = load <8 x double>, ptr %192, align 64, !tbaa !26
  %4011 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %4012 = load <8 x double>, ptr %165, align 64, !tbaa !26
  %4013 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %4014 = fdiv <8 x double> %4011, %3272
  %4015 = icmp sgt i64 %3994, 0
  br label %4016

4016:                                             ; preds = %3611, %4008
  %4017 = phi <8 x double> [ %4014, %4008 ], [ %3282, %3611 ]
  %4018 = phi i1 [ %4015, %4008 ], [ false, %3611 ]
  %4019 = phi <8 x double> [ %4013, %4008 ], [ %3261, %3611 ]
  %4020 = phi <8 x double> [ %4012, %4008 ], [ %3540, %3611 ]
  %4021 = phi <8 x double> [ %4010, %4008 ], [ %3278, %3611 ]
  %4022 = phi <8 x double> [ %4009, %4008 ], [ %3276, %3611 ]
  %4023 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4024 = fadd <8 x double> %4023, %4022
  %4025 = select <8 x i1> %3612, <8 x double> %4023, <8 x double> %4024
  store <8 x double> %4025, ptr %158, align 64, !tbaa !26
  %4026 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %4027 = select <8 x i1> %3612, <8 x double> %4026, <8 x double> %4022
  store <8 x double> %4027, ptr %167, align 64, !tbaa !26
  %4028 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4029 = fadd <8 x double> %4028, splat (double 1.000000e+00)
  %4030 = select <8 x i1> %3612, <8 x double> %4028, <8 x double> %4029
  store <8 x double> %4030, ptr %145, align 64, !tbaa !26
  %4031 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4032 = fcmp olt <8 x double> %4031, %4022
  %4033 = select <8 x i1> %3612, <8 x i1> splat (i1 true), <8 x i1> %4032
  %4034 = select <8 x i1> %4033, <8 x double> %4031, <8 x double> %4022
  store <8 x double> %4034, ptr %147, align 64, !tbaa !26
  %4035 = fcmp une <8 x double> %4021, zeroinitializer
  %4036 = fcmp ueq <8 x double> %3271, zeroinitializer
  %4037 = or <8 x i1> %4036, %4035
  %4038 = fcmp olt <8 x double> %4017, splat (double 1.800000e+00)
  %4039 = select <8 x i1> %4038, <8 x double> %4017, <8 x double> splat (double 1.800000e+00)
  %4040 = select <8 x i1> %4037, <8 x double> splat (double 1.800000e+00), <8 x double> %4039
  %4041 = fcmp ogt <8 x double> %4040, splat (double 2.000000e-01)
  %4042 = select <8 x i1> %4041, <8 x double> %4040, <8 x double> splat (double 2.000000e-01)
  %4043 = fmul <8 x double> %4022, %4042
  %4044 = fmul <8 x double> %4022, splat (double 4.000000e+00)
  %4045 = fcmp olt <8 x double> %4020, %4044
  %4046 = select <8 x i1> %4045, <8 x double> %4020, <8 x double> %4044
  %4047 = fcmp ogt <8 x double> %4043, %4046
  %4048 = select <8 x i1> %4047, <8 x double> %4043, <8 x double> %4046
  %4049 = select <8 x i1> %3612, <8 x double> %4020, <8 x double> zeroinitializer
  store <8 x double> %4049, ptr %165, align 64, !tbaa !26
  %4050 = select <8 x i1> %3612, <8 x double> %4019, <8 x double> zeroinitializer
  store <8 x double> %4050, ptr %227, align 64, !tbaa !26
  %4051 = load <8 x i64>, ptr %169, align 64, !tbaa !26
  %4052 = and <8 x i64> %4051, %3640
  store <8 x i64> %4052, ptr %169, align 64, !tbaa !26
  br i1 %4018, label %4053, label %4350

4053:                                             ; preds = %4016, %4343
  %4054 = phi i64 [ %4345, %4343 ], [ 0, %4016 ]
  %4055 = phi <8 x double> [ %4344, %4343 ], [ %4048, %4016 ]
  %4056 = load ptr, ptr %151, align 8, !tbaa !28
  %4057 = getelementptr inbounds nuw %struct.Piece, ptr %4056, i64 %4054
  %4058 = getelementptr inbounds nuw i8, ptr %4057, i64 3776
  %4059 = load <8 x double>, ptr %4058, align 64, !tbaa !26
  %4060 = getelementptr inbounds nuw i8, ptr %4057, i64 1472
  %4061 = load <8 x double>, ptr %4060, align 64, !tbaa !26
  %4062 = fmul <8 x double> %4061, splat (double 1.001000e+00)
  %4063 = fcmp ole <8 x double> %4059, %4062
  %4064 = getelementptr inbounds nuw i8, ptr %4057, i64 1600
  %4065 = load <8 x double>, ptr %4064, align 64, !tbaa !26
  %4066 = getelementptr inbounds nuw i8, ptr %4057, i64 4032
  %4067 = load <8 x double>, ptr %4066, align 64, !tbaa !26
  %4068 = fsub <8 x double> %4065, %4067
  %4069 = fmul <8 x double> %4065, splat (double 1.000000e-04)
  %4070 = fcmp ole <8 x double> %4068, %4069
  %4071 = getelementptr inbounds nuw i8, ptr %4057, i64 7360
  %4072 = load <8 x i64>, ptr %4071, align 64, !tbaa !26
  %4073 = and <8 x i64> %4072, %3552
  %4074 = getelementptr inbounds nuw i8, ptr %4057, i64 7296
  %4075 = load <8 x double>, ptr %4074, align 64, !tbaa !26
  %4076 = fcmp oeq <8 x double> %4075, zeroinitializer
  %4077 = and <8 x i1> %4063, %4076
  %4078 = fcmp oeq <8 x double> %4075, splat (double 1.000000e+00)
  %4079 = and <8 x i1> %4070, %4078
  %4080 = or <8 x i1> %4077, %4079
  %4081 = select <8 x i1> %4080, <8 x i64> %4073, <8 x i64> zeroinitializer
  %4082 = fadd <8 x double> %4075, splat (double 1.000000e+00)
  %4083 = icmp eq <8 x i64> %4081, zeroinitializer
  %4084 = select <8 x i1> %4083, <8 x double> %4075, <8 x double> %4082
  store <8 x double> %4084, ptr %4074, align 64, !tbaa !26
  %4085 = getelementptr inbounds nuw i8, ptr %4057, i64 7424
  %4086 = load <8 x i64>, ptr %4085, align 64, !tbaa !26
  %4087 = or <8 x i64> %4081, %4086
  store <8 x i64> %4087, ptr %4085, align 64, !tbaa !26
  %4088 = getelementptr inbounds nuw i8, ptr %4057, i64 896
  %4089 = load <8 x double>, ptr %4088, align 64, !tbaa !26
  %4090 = getelementptr inbounds nuw i8, ptr %4057, i64 5632
  %4091 = load <8 x double>, ptr %4090, align 64, !tbaa !26
  %4092 = getelementptr inbounds nuw i8, ptr %4057, i64 5696
  %4093 = load <8 x double>, ptr %4092, align 64, !tbaa !26
  %4094 = fadd <8 x double> %4091, %4093
  %4095 = fcmp ogt <8 x double> %4094, zeroinitializer
  %4096 = xor <8 x i64> %4072, splat (i64 -1)
  %4097 = and <8 x i64> %3552, %4096
  %4098 = fcmp une <8 x double> %4089, zeroinitializer
  %4099 = or <8 x i1> %4098, %4095
  %4100 = getelementptr inbounds nuw i8, ptr %4057, i64 3840
  %4101 = load <8 x double>, ptr %4100, align 64, !tbaa !26
  %4102 = fmul <8 x double> %4089, splat (double 1.000000e-04)
  %4103 = fcmp ogt <8 x double> %4102, splat (double 0x3E7AD7F29ABCAF48)
  %4104 = select <8 x i1> %4103, <8 x double> %4102, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4105 = fcmp ole <8 x double> %4101, %4104
  %4106 = select <8 x i1> %4105, <8 x i1> %4099, <8 x i1> zeroinitializer
  %4107 = select <8 x i1> %4106, <8 x i64> %4097, <8 x i64> zeroinitializer
  %4108 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4107)
  %4109 = icmp eq i64 %4108, 0
  br i1 %4109, label %4343, label %4110

4110:                                             ; preds = %4053
  %4111 = load i64, ptr %141, align 16, !tbaa !21
  %4112 = load i64, ptr %142, align 8, !tbaa !22
  %4113 = getelementptr inbounds nuw i8, ptr %4057, i64 4416
  %4114 = load <8 x double>, ptr %4113, align 64, !tbaa !26
  %4115 = getelementptr inbounds nuw i8, ptr %4057, i64 5568
  %4116 = load <8 x double>, ptr %4115, align 64, !tbaa !26
  %4117 = getelementptr inbounds nuw i8, ptr %4057, i64 832
  %4118 = load <8 x double>, ptr %4117, align 64, !tbaa !26
  %4119 = getelementptr inbounds nuw i8, ptr %4057, i64 7600
  %4120 = load ptr, ptr %4119, align 16, !tbaa !48
  %4121 = add nsw i64 %4111, -1
  %4122 = getelementptr inbounds <8 x double>, ptr %4120, i64 %4121
  %4123 = load <8 x double>, ptr %4122, align 64, !tbaa !26
  %4124 = fmul <8 x double> %4118, %4123
  %4125 = fneg <8 x double> %4101
  %4126 = fdiv <8 x double> %4125, %4124
  %4127 = fcmp ogt <8 x double> %4126, splat (double 0x3E7AD7F29ABCAF48)
  %4128 = select <8 x i1> %4127, <8 x double> %4126, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4129 = load <8 x double>, ptr %4057, align 64, !tbaa !26
  %4130 = fsub <8 x double> %4129, %4128
  %4131 = getelementptr inbounds nuw i8, ptr %4057, i64 2560
  %4132 = load <8 x double>, ptr %4131, align 64, !tbaa !26
  %4133 = getelementptr inbounds nuw i8, ptr %4057, i64 2624
  %4134 = load <8 x double>, ptr %4133, align 64, !tbaa !26
  %4135 = getelementptr inbounds nuw i8, ptr %4057, i64 2688
  %4136 = load <8 x double>, ptr %4135, align 64, !tbaa !26
  %4137 = getelementptr inbounds nuw i8, ptr %4057, i64 2752
  %4138 = load <8 x double>, ptr %4137, align 64, !tbaa !26
  %4139 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4130, <8 x double> %4138, <8 x double> %4136)
  %4140 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4130, <8 x double> %4139, <8 x double> %4134)
  %4141 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4130, <8 x double> %4140, <8 x double> %4132)
  %4142 = getelementptr inbounds nuw i8, ptr %4057, i64 7568
  %4143 = load ptr, ptr %4142, align 16, !tbaa !47
  %4144 = getelementptr inbounds <8 x double>, ptr %4143, i64 %4121
  %4145 = load <8 x double>, ptr %4144, align 64, !tbaa !26
  %4146 = getelementptr inbounds nuw i8, ptr %4057, i64 7552
  %4147 = load i64, ptr %4146, align 64, !tbaa !31
  %4148 = icmp sgt i64 %4111, %4147
  br i1 %4148, label %4152, label %4149

4149:                                             ; preds = %4110
  %4150 = getelementptr inbounds nuw i8, ptr %4057, i64 640
  %4151 = load <8 x double>, ptr %4150, align 64, !tbaa !26
  br label %4163

4152:                                             ; preds = %4110
  %4153 = getelementptr inbounds nuw i8, ptr %4057, i64 384
  %4154 = load <8 x double>, ptr %4153, align 64, !tbaa !26
  %4155 = getelementptr inbounds nuw i8, ptr %4057, i64 448
  %4156 = load <8 x double>, ptr %4155, align 64, !tbaa !26
  %4157 = getelementptr inbounds nuw i8, ptr %4057, i64 512
  %4158 = load <8 x double>, ptr %4157, align 64, !tbaa !26
  %4159 = fmul <8 x double> %4145, %4158
  %4160 = fmul <8 x double> %4159, splat (double 0x3FD5555555555555)
  %4161 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4156, <8 x double> splat (double 5.000000e-01), <8 x double> %4160)
  %4162 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4145, <8 x double> %4161, <8 x double> %4154)
  br label %4163

4163:                                             ; preds = %4152, %4149
  %4164 = phi <8 x double> [ %4151, %4149 ], [ %4162, %4152 ]
  %4165 = fmul <8 x double> %4145, %4164
  %4166 = icmp sgt i64 %4111, 0
  br i1 %4166, label %4167, label %4177

4167:                                             ; preds = %4163
  %4168 = getelementptr inbounds nuw i8, ptr %4057, i64 640
  %4169 = getelementptr inbounds nuw i8, ptr %4057, i64 384
  %4170 = getelementptr inbounds nuw i8, ptr %4057, i64 448
  %4171 = getelementptr inbounds nuw i8, ptr %4057, i64 512
  %4172 = getelementptr inbounds nuw i8, ptr %4057, i64 1536
  %4173 = getelementptr inbounds nuw i8, ptr %4057, i64 7648
  %4174 = icmp eq <8 x i64> %4107, zeroinitializer
  br label %4189

4175:                                             ; preds = %4268
  %4176 = load <8 x double>, ptr %4057, align 64, !tbaa !26
  br label %4177

4177:                                             ; preds = %4175, %4163
  %4178 = phi <8 x double> [ %4176, %4175 ], [ %4129, %4163 ]
  %4179 = fsub <8 x double> %4178, %4130
  %4180 = sitofp i64 %4112 to double
  %4181 = insertelement <8 x double> poison, double %4180, i64 0
  %4182 = shufflevector <8 x double> %4181, <8 x double> poison, <8 x i32> zeroinitializer
  %4183 = fdiv <8 x double> %4179, %4182
  %4184 = icmp sgt i64 %4112, 0
  br i1 %4184, label %4185, label %4299

4185:                                             ; preds = %4177
  %4186 = getelementptr inbounds nuw i8, ptr %4057, i64 7736
  %4187 = icmp eq <8 x i64> %4107, zeroinitializer
  %4188 = getelementptr inbounds nuw i8, ptr %4057, i64 7688
  br label %4276

4189:                                             ; preds = %4167, %4268
  %4190 = phi <8 x double> [ %4145, %4167 ], [ %4238, %4268 ]
  %4191 = phi <8 x double> [ %4165, %4167 ], [ %4239, %4268 ]
  %4192 = phi <8 x double> [ %4141, %4167 ], [ %4237, %4268 ]
  %4193 = phi i64 [ %4121, %4167 ], [ %4274, %4268 ]
  %4194 = icmp eq i64 %4193, 0
  br i1 %4194, label %4236, label %4195

4195:                                             ; preds = %4189
  %4196 = load ptr, ptr %4142, align 16, !tbaa !47
  %4197 = getelementptr <8 x double>, ptr %4196, i64 %4193
  %4198 = getelementptr i8, ptr %4197, i64 -64
  %4199 = load <8 x double>, ptr %4198, align 64, !tbaa !26
  %4200 = load i64, ptr %4146, align 64, !tbaa !31
  %4201 = icmp sgt i64 %4193, %4200
  br i1 %4201, label %4204, label %4202

4202:                                             ; preds = %4195
  %4203 = load <8 x double>, ptr %4168, align 64, !tbaa !26
  br label %4212

4204:                                             ; preds = %4195
  %4205 = load <8 x double>, ptr %4169, align 64, !tbaa !26
  %4206 = load <8 x double>, ptr %4170, align 64, !tbaa !26
  %4207 = load <8 x double>, ptr %4171, align 64, !tbaa !26
  %4208 = fmul <8 x double> %4199, %4207
  %4209 = fmul <8 x double> %4208, splat (double 0x3FD5555555555555)
  %4210 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4206, <8 x double> splat (double 5.000000e-01), <8 x double> %4209)
  %4211 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4199, <8 x double> %4210, <8 x double> %4205)
  br label %4212

4212:                                             ; preds = %4202, %4204
  %4213 = phi <8 x double> [ %4211, %4204 ], [ %4203, %4202 ]
  %4214 = fmul <8 x double> %4199, %4213
  %4215 = icmp slt i64 %4193, %4200
  br i1 %4215, label %4216, label %4223

4216:                                             ; preds = %4212
  %4217 = load ptr, ptr %4173, align 32, !tbaa !72
  %4218 = getelementptr inbounds nuw <8 x double>, ptr %4217, i64 %4193
  %4219 = load <8 x double>, ptr %4218, align 64, !tbaa !26
  %4220 = load <8 x double>, ptr %4172, align 64, !tbaa !26
  %4221 = fmul <8 x double> %4219, %4220
  %4222 = fmul <8 x double> %4219, %4220
  br label %4232

4223:                                             ; preds = %4212
  %4224 = load <8 x double>, ptr %4172, align 64, !tbaa !26
  %4225 = load ptr, ptr %4173, align 32, !tbaa !72
  %4226 = getelementptr inbounds nuw <8 x double>, ptr %4225, i64 %4193
  %4227 = load <8 x double>, ptr %4226, align 64, !tbaa !26
  %4228 = fsub <8 x double> %4141, %4224
  %4229 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4227, <8 x double> %4228, <8 x double> %4224)
  %4230 = fsub <8 x double> %4114, %4224
  %4231 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4227, <8 x double> %4230, <8 x double> %4224)
  br label %4232

4232:                                             ; preds = %4223, %4216
  %4233 = phi <8 x double> [ %4221, %4216 ], [ %4229, %4223 ]
  %4234 = phi <8 x double> [ %4222, %4216 ], [ %4231, %4223 ]
  %4235 = fsub <8 x double> %4234, %4233
  br label %4236

4236:                                             ; preds = %4189, %4232
  %4237 = phi <8 x double> [ %4233, %4232 ], [ zeroinitializer, %4189 ]
  %4238 = phi <8 x double> [ %4199, %4232 ], [ %4190, %4189 ]
  %4239 = phi <8 x double> [ %4214, %4232 ], [ %4191, %4189 ]
  %4240 = phi <8 x double> [ %4235, %4232 ], [ zeroinitializer, %4189 ]
  %4241 = fsub <8 x double> %4192, %4237
  %4242 = fdiv <8 x double> %4240, %4241
  %4243 = fsub <8 x double> %4239, %4191
  %4244 = fmul <8 x double> %4243, %4242
  %4245 = load ptr, ptr %4119, align 16, !tbaa !48
  %4246 = getelementptr inbounds nuw <8 x double>, ptr %4245, i64 %4193
  %4247 = load <8 x double>, ptr %4246, align 64, !tbaa !26
  br i1 %4194, label %4251, label %4248

4248:                                             ; preds = %4236
  %4249 = getelementptr i8, ptr %4246, i64 -64
  %4250 = load <8 x double>, ptr %4249, align 64, !tbaa !26
  br label %4251

4251:                                             ; preds = %4248, %4236
  %4252 = phi <8 x double> [ %4250, %4248 ], [ %4247, %4236 ]
  %4253 = fsub <8 x double> %4252, %4247
  %4254 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4253, <8 x double> %4242, <8 x double> %4247)
  %4255 = select <8 x i1> %4174, <8 x double> %4247, <8 x double> %4254
  store <8 x double> %4255, ptr %4246, align 64, !tbaa !26
  %4256 = load ptr, ptr %4142, align 16, !tbaa !47
  %4257 = getelementptr inbounds nuw <8 x double>, ptr %4256, i64 %4193
  %4258 = load i64, ptr %4146, align 64, !tbaa !31
  %4259 = icmp slt i64 %4193, %4258
  br i1 %4259, label %4260, label %4262

4260:                                             ; preds = %4251
  %4261 = load <8 x double>, ptr %4168, align 64, !tbaa !26
  br label %4268

4262:                                             ; preds = %4251
  %4263 = load <8 x double>, ptr %4169, align 64, !tbaa !26
  %4264 = load <8 x double>, ptr %4170, align 64, !tbaa !26
  %4265 = load <8 x double>, ptr %4171, align 64, !tbaa !26
  %4266 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4190, <8 x double> %4265, <8 x double> %4264)
  %4267 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4190, <8 x double> %4266, <8 x double> %4263)
  br label %4268

4268:                                             ; preds = %4262, %4260
  %4269 = phi <8 x double> [ %4261, %4260 ], [ %4267, %4262 ]
  %4270 = fdiv <8 x double> %4244, %4269
  %4271 = fadd <8 x double> %4190, %4270
  %4272 = load <8 x double>, ptr %4257, align 64, !tbaa !26
  %4273 = select <8 x i1> %4174, <8 x double> %4272, <8 x double> %4271
  store <8 x double> %4273, ptr %4257, align 64, !tbaa !26
  %4274 = add nsw i64 %4193, -1
  %4275 = icmp sgt i64 %4193, 0
  br i1 %4275, label %4189, label %4175, !llvm.loop !131

4276:                                             ; preds = %4185, %4276
  %4277 = phi i64 [ 0, %4185 ], [ %4297, %4276 ]
  %4278 = load ptr, ptr %4186, align 8, !tbaa !50
  %4279 = getelementptr inbounds nuw <8 x double>, ptr %4278, i64 %4277
  %4280 = uitofp nneg i64 %4277 to double
  %4281 = insertelement <8 x double> poison, double %4280, i64 0
  %4282 = shufflevector <8 x double> %4281, <8 x double> poison, <8 x i32> zeroinitializer
  %4283 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4282, <8 x double> %4183, <8 x double> %4130)
  %4284 = load <8 x double>, ptr %4131, align 64, !tbaa !26
  %4285 = load <8 x double>, ptr %4133, align 64, !tbaa !26
  %4286 = load <8 x double>, ptr %4135, align 64, !tbaa !26
  %4287 = load <8 x double>, ptr %4137, align 64, !tbaa !26
  %4288 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4283, <8 x double> %4287, <8 x double> %4286)
  %4289 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4283, <8 x double> %4288, <8 x double> %4285)
  %4290 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4283, <8 x double> %4289, <8 x double> %4284)
  %4291 = load <8 x double>, ptr %4279, align 64, !tbaa !26
  %4292 = select <8 x i1> %4187, <8 x double> %4291, <8 x double> %4290
  store <8 x double> %4292, ptr %4279, align 64, !tbaa !26
  %4293 = load ptr, ptr %4188, align 8, !tbaa !51
  %4294 = getelementptr inbounds nuw <8 x double>, ptr %4293, i64 %4277
  %4295 = load <8 x double>, ptr %4294, align 64, !tbaa !26
  %4296 = select <8 x i1> %4187, <8 x double> %4295, <8 x double> %4116
  store <8 x double> %4296, ptr %4294, align 64, !tbaa !26
  %4297 = add nuw nsw i64 %4277, 1
  %4298 = icmp eq i64 %4297, %4112
  br i1 %4298, label %4299, label %4276, !llvm.loop !132

4299:                                             ; preds = %4276, %4177
  %4300 = fsub <8 x double> %4114, %4141
  %4301 = getelementptr inbounds nuw i8, ptr %4057, i64 3712
  %4302 = getelementptr inbounds nuw i8, ptr %4057, i64 7736
  %4303 = load ptr, ptr %4302, align 8, !tbaa !50
  %4304 = getelementptr inbounds <8 x double>, ptr %4303, i64 %4112
  %4305 = getelementptr inbounds nuw i8, ptr %4057, i64 1408
  %4306 = load <8 x double>, ptr %4305, align 64, !tbaa !26
  %4307 = load <8 x double>, ptr %4304, align 64, !tbaa !26
  %4308 = icmp eq <8 x i64> %4107, zeroinitializer
  %4309 = select <8 x i1> %4308, <8 x double> %4307, <8 x double> %4306
  store <8 x double> %4309, ptr %4304, align 64, !tbaa !26
  %4310 = load <8 x double>, ptr %4301, align 64, !tbaa !26
  %4311 = select <8 x i1> %4308, <8 x double> %4310, <8 x double> %4130
  store <8 x double> %4311, ptr %4301, align 64, !tbaa !26
  %4312 = load <8 x double>, ptr %4058, align 64, !tbaa !26
  %4313 = select <8 x i1> %4308, <8 x double> %4312, <8 x double> %4141
  store <8 x double> %4313, ptr %4058, align 64, !tbaa !26
  %4314 = load <8 x double>, ptr %4113, align 64, !tbaa !26
  %4315 = select <8 x i1> %4308, <8 x double> %4314, <8 x double> %4141
  store <8 x double> %4315, ptr %4113, align 64, !tbaa !26
  %4316 = getelementptr inbounds nuw i8, ptr %4057, i64 3904
  %4317 = load <8 x double>, ptr %4316, align 64, !tbaa !26
  %4318 = fneg <8 x double> %4300
  %4319 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4318, <8 x double> %4124, <8 x double> %4317)
  %4320 = select <8 x i1> %4308, <8 x double> %4317, <8 x double> %4319
  store <8 x double> %4320, ptr %4316, align 64, !tbaa !26
  %4321 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4300, <8 x double> %4124, <8 x double> %4101)
  %4322 = load <8 x double>, ptr %4100, align 64, !tbaa !26
  %4323 = select <8 x i1> %4308, <8 x double> %4322, <8 x double> %4321
  store <8 x double> %4323, ptr %4100, align 64, !tbaa !26
  %4324 = getelementptr inbounds nuw i8, ptr %4057, i64 4160
  %4325 = load <8 x double>, ptr %4324, align 64, !tbaa !26
  %4326 = getelementptr inbounds nuw i8, ptr %4057, i64 768
  %4327 = load <8 x double>, ptr %4326, align 64, !tbaa !26
  %4328 = fneg <8 x double> %4327
  %4329 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4328, <8 x double> %4116, <8 x double> %4165)
  %4330 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4300, <8 x double> %4329, <8 x double> %4325)
  %4331 = select <8 x i1> %4308, <8 x double> %4325, <8 x double> %4330
  store <8 x double> %4331, ptr %4324, align 64, !tbaa !26
  %4332 = load <8 x i64>, ptr %4071, align 64, !tbaa !26
  %4333 = or <8 x i64> %4332, %4107
  store <8 x i64> %4333, ptr %4071, align 64, !tbaa !26
  %4334 = load <8 x i64>, ptr %4085, align 64, !tbaa !26
  %4335 = or <8 x i64> %4334, %4107
  store <8 x i64> %4335, ptr %4085, align 64, !tbaa !26
  %4336 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4337 = fmul <8 x double> %4336, splat (double 5.000000e+00)
  %4338 = fcmp olt <8 x double> %4055, %4337
  %4339 = select <8 x i1> %4338, <8 x double> %4055, <8 x double> %4337
  %4340 = icmp ne <8 x i64> %4107, zeroinitializer
  %4341 = select <8 x i1> %4098, <8 x i1> %4340, <8 x i1> zeroinitializer
  %4342 = select <8 x i1> %4341, <8 x double> %4339, <8 x double> %4055
  br label %4343

4343:                                             ; preds = %4299, %4053
  %4344 = phi <8 x double> [ %4342, %4299 ], [ %4055, %4053 ]
  %4345 = add nuw nsw i64 %4054, 1
  %4346 = load i64, ptr %166, align 8, !tbaa !20
  %4347 = icmp slt i64 %4345, %4346
  br i1 %4347, label %4053, label %4348, !llvm.loop !133

4348:                                             ; preds = %4343
  %4349 = load <8 x double>, ptr %158, align 64, !tbaa !26
  br label %4350

4350:                                             ; preds = %4348, %4016
  %4351 = phi <8 x double> [ %4025, %4016 ], [ %4349, %4348 ]
  %4352 = phi <8 x double> [ %4048, %4016 ], [ %4344, %4348 ]
  %4353 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4354 = select <8 x i1> %3612, <8 x double> %4353, <8 x double> %4352
  store <8 x double> %4354, ptr %161, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %3552, ptr %13, align 64, !tbaa !26
  %4355 = load ptr, ptr %235, align 64, !tbaa !38
  %4356 = getelementptr inbounds nuw i8, ptr %4355, i64 64
  store <8 x double> %4351, ptr %4355, align 64, !tbaa !26
  %4357 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4358 = getelementptr inbounds nuw i8, ptr %4355, i64 128
  store <8 x double> %4357, ptr %4356, align 64, !tbaa !26
  %4359 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %4360 = getelementptr inbounds nuw i8, ptr %4355, i64 192
  store <8 x double> %4359, ptr %4358, align 64, !tbaa !26
  %4361 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %4362 = getelementptr inbounds nuw i8, ptr %4355, i64 256
  store <8 x double> %4361, ptr %4360, align 64, !tbaa !26
  %4363 = load i64, ptr %166, align 8, !tbaa !20
  %4364 = icmp sgt i64 %4363, 0
  br i1 %4364, label %4369, label %4365

4365:                                             ; preds = %4369, %4350
  %4366 = phi ptr [ %4362, %4350 ], [ %4375, %4369 ]
  %4367 = load i64, ptr %237, align 8, !tbaa !134
  %4368 = icmp eq i64 %4367, 0
  br i1 %4368, label %4504, label %4379

4369:                                             ; preds = %4350, %4369
  %4370 = phi ptr [ %4375, %4369 ], [ %4362, %4350 ]
  %4371 = phi i64 [ %4376, %4369 ], [ 0, %4350 ]
  %4372 = load ptr, ptr %151, align 8, !tbaa !28
  %4373 = getelementptr inbounds nuw %struct.Piece, ptr %4372, i64 %4371, i32 35
  %4374 = load <8 x double>, ptr %4373, align 64, !tbaa !26
  %4375 = getelementptr inbounds nuw i8, ptr %4370, i64 64
  store <8 x double> %4374, ptr %4370, align 64, !tbaa !26
  %4376 = add nuw nsw i64 %4371, 1
  %4377 = load i64, ptr %166, align 8, !tbaa !20
  %4378 = icmp slt i64 %4376, %4377
  br i1 %4378, label %4369, label %4365, !llvm.loop !135

4379:                                             ; preds = %4365
  %4380 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %4381 = getelementptr inbounds nuw i8, ptr %4366, i64 64
  store <8 x double> %4380, ptr %4366, align 64, !tbaa !26
  %4382 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4383 = getelementptr inbounds nuw i8, ptr %4366, i64 128
  store <8 x double> %4382, ptr %4381, align 64, !tbaa !26
  %4384 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %4385 = load <8 x double>, ptr %214, align 64, !tbaa !26
  %4386 = fsub <8 x double> %4384, %4385
  %4387 = fcmp ogt <8 x double> %4386, zeroinitializer
  %4388 = select <8 x i1> %4387, <8 x double> %4386, <8 x double> zeroinitializer
  store <8 x double> %4388, ptr %4383, align 64, !tbaa !26
  %4389 = load i64, ptr %166, align 8, !tbaa !20
  %4390 = icmp sgt i64 %4389, 0
  br i1 %4390, label %4391, label %4504

4391:                                             ; preds = %4379
  %4392 = getelementptr inbounds nuw i8, ptr %4366, i64 192
  br label %4393

4393:                                             ; preds = %4391, %4393
  %4394 = phi ptr [ %4500, %4393 ], [ %4392, %4391 ]
  %4395 = phi i64 [ %4501, %4393 ], [ 0, %4391 ]
  %4396 = load ptr, ptr %151, align 8, !tbaa !28
  %4397 = getelementptr inbounds nuw %struct.Piece, ptr %4396, i64 %4395
  %4398 = getelementptr inbounds nuw i8, ptr %4397, i64 7568
  %4399 = load ptr, ptr %4398, align 16, !tbaa !47
  %4400 = load i64, ptr %141, align 16, !tbaa !21
  %4401 = getelementptr <8 x double>, ptr %4399, i64 %4400
  %4402 = getelementptr i8, ptr %4401, i64 -64
  %4403 = load <8 x double>, ptr %4402, align 64, !tbaa !26
  %4404 = getelementptr inbounds nuw i8, ptr %4397, i64 6848
  %4405 = load <8 x double>, ptr %4404, align 64, !tbaa !26
  %4406 = getelementptr inbounds nuw i8, ptr %4397, i64 5568
  %4407 = load <8 x double>, ptr %4406, align 64, !tbaa !26
  %4408 = fsub <8 x double> %4407, %4403
  %4409 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4405, <8 x double> %4408, <8 x double> %4403)
  %4410 = getelementptr inbounds nuw i8, ptr %4394, i64 64
  store <8 x double> %4409, ptr %4394, align 64, !tbaa !26
  %4411 = getelementptr inbounds nuw i8, ptr %4397, i64 6400
  %4412 = load <8 x double>, ptr %4411, align 64, !tbaa !26
  %4413 = getelementptr inbounds nuw i8, ptr %4394, i64 128
  store <8 x double> %4412, ptr %4410, align 64, !tbaa !26
  %4414 = load <8 x double>, ptr %4397, align 64, !tbaa !26
  %4415 = getelementptr inbounds nuw i8, ptr %4397, i64 3712
  %4416 = load <8 x double>, ptr %4415, align 64, !tbaa !26
  %4417 = fsub <8 x double> %4414, %4416
  %4418 = getelementptr inbounds nuw i8, ptr %4394, i64 192
  store <8 x double> %4417, ptr %4413, align 64, !tbaa !26
  %4419 = getelementptr inbounds nuw i8, ptr %4397, i64 4032
  %4420 = load <8 x double>, ptr %4419, align 64, !tbaa !26
  %4421 = getelementptr inbounds nuw i8, ptr %4394, i64 256
  store <8 x double> %4420, ptr %4418, align 64, !tbaa !26
  %4422 = getelementptr inbounds nuw i8, ptr %4397, i64 3968
  %4423 = load <8 x double>, ptr %4422, align 64, !tbaa !26
  %4424 = getelementptr inbounds nuw i8, ptr %4394, i64 320
  store <8 x double> %4423, ptr %4421, align 64, !tbaa !26
  %4425 = getelementptr inbounds nuw i8, ptr %4397, i64 3840
  %4426 = load <8 x double>, ptr %4425, align 64, !tbaa !26
  %4427 = getelementptr inbounds nuw i8, ptr %4394, i64 384
  store <8 x double> %4426, ptr %4424, align 64, !tbaa !26
  %4428 = getelementptr inbounds nuw i8, ptr %4397, i64 4096
  %4429 = load <8 x double>, ptr %4428, align 64, !tbaa !26
  %4430 = getelementptr inbounds nuw i8, ptr %4394, i64 448
  store <8 x double> %4429, ptr %4427, align 64, !tbaa !26
  %4431 = getelementptr inbounds nuw i8, ptr %4397, i64 7688
  %4432 = load i64, ptr %142, align 8, !tbaa !22
  %4433 = sitofp i64 %4432 to double
  %4434 = tail call double @llvm.fmuladd.f64(double %4433, double 7.500000e-01, double -5.000000e-01)
  %4435 = fcmp ogt double %4434, 0.000000e+00
  %4436 = select i1 %4435, double %4434, double 0.000000e+00
  %4437 = fptosi double %4436 to i64
  %4438 = add nsw i64 %4432, -2
  %4439 = tail call i64 @llvm.smin.i64(i64 %4438, i64 %4437)
  %4440 = sitofp i64 %4439 to double
  %4441 = fsub double %4434, %4440
  %4442 = fsub double 1.000000e+00, %4441
  %4443 = insertelement <8 x double> poison, double %4442, i64 0
  %4444 = shufflevector <8 x double> %4443, <8 x double> poison, <8 x i32> zeroinitializer
  %4445 = load ptr, ptr %4431, align 8, !tbaa !51
  %4446 = getelementptr inbounds <8 x double>, ptr %4445, i64 %4439
  %4447 = load <8 x double>, ptr %4446, align 64, !tbaa !26
  %4448 = insertelement <8 x double> poison, double %4441, i64 0
  %4449 = shufflevector <8 x double> %4448, <8 x double> poison, <8 x i32> zeroinitializer
  %4450 = getelementptr i8, ptr %4446, i64 64
  %4451 = load <8 x double>, ptr %4450, align 64, !tbaa !26
  %4452 = fmul <8 x double> %4451, %4449
  %4453 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4444, <8 x double> %4447, <8 x double> %4452)
  store <8 x double> %4453, ptr %4430, align 64, !tbaa !26
  %4454 = load i64, ptr %142, align 8, !tbaa !22
  %4455 = sitofp i64 %4454 to double
  %4456 = tail call double @llvm.fmuladd.f64(double %4455, double 5.000000e-01, double -5.000000e-01)
  %4457 = fcmp ogt double %4456, 0.000000e+00
  %4458 = select i1 %4457, double %4456, double 0.000000e+00
  %4459 = fptosi double %4458 to i64
  %4460 = add nsw i64 %4454, -2
  %4461 = tail call i64 @llvm.smin.i64(i64 %4460, i64 %4459)
  %4462 = sitofp i64 %4461 to double
  %4463 = fsub double %4456, %4462
  %4464 = fsub double 1.000000e+00, %4463
  %4465 = insertelement <8 x double> poison, double %4464, i64 0
  %4466 = shufflevector <8 x double> %4465, <8 x double> poison, <8 x i32> zeroinitializer
  %4467 = load ptr, ptr %4431, align 8, !tbaa !51
  %4468 = getelementptr inbounds <8 x double>, ptr %4467, i64 %4461
  %4469 = load <8 x double>, ptr %4468, align 64, !tbaa !26
  %4470 = insertelement <8 x double> poison, double %4463, i64 0
  %4471 = shufflevector <8 x double> %4470, <8 x double> poison, <8 x i32> zeroinitializer
  %4472 = getelementptr i8, ptr %4468, i64 64
  %4473 = load <8 x double>, ptr %4472, align 64, !tbaa !26
  %4474 = fmul <8 x double> %4473, %4471
  %4475 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4466, <8 x double> %4469, <8 x double> %4474)
  %4476 = getelementptr inbounds nuw i8, ptr %4394, i64 512
  store <8 x double> %4475, ptr %4476, align 64, !tbaa !26
  %4477 = load i64, ptr %142, align 8, !tbaa !22
  %4478 = sitofp i64 %4477 to double
  %4479 = tail call double @llvm.fmuladd.f64(double %4478, double 2.500000e-01, double -5.000000e-01)
  %4480 = fcmp ogt double %4479, 0.000000e+00
  %4481 = select i1 %4480, double %4479, double 0.000000e+00
  %4482 = fptosi double %4481 to i64
  %4483 = add nsw i64 %4477, -2
  %4484 = tail call i64 @llvm.smin.i64(i64 %4483, i64 %4482)
  %4485 = sitofp i64 %4484 to double
  %4486 = fsub double %4479, %4485
  %4487 = fsub double 1.000000e+00, %4486
  %4488 = insertelement <8 x double> poison, double %4487, i64 0
  %4489 = shufflevector <8 x double> %4488, <8 x double> poison, <8 x i32> zeroinitializer
  %4490 = load ptr, ptr %4431, align 8, !tbaa !51
  %4491 = getelementptr inbounds <8 x double>, ptr %4490, i64 %4484
  %4492 = load <8 x double>, ptr %4491, align 64, !tbaa !26
  %4493 = insertelement <8 x double> poison, double %4486, i64 0
  %4494 = shufflevector <8 x double> %4493, <8 x double> poison, <8 x i32> zeroinitializer
  %4495 = getelementptr i8, ptr %4491, i64 64
  %4496 = load <8 x double>, ptr %4495, align 64, !tbaa !26
  %4497 = fmul <8 x double> %4496, %4494
  %4498 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4489, <8 x double> %4492, <8 x double> %4497)
  %4499 = getelementptr inbounds nuw i8, ptr %4394, i64 576
  store <8 x double> %4498, ptr %4499, align 64, !tbaa !26
  %4500 = getelementptr inbounds nuw i8, ptr %4394, i64 640
  %4501 = add nuw nsw i64 %4395, 1
  %4502 = load i64, ptr %166, align 8, !tbaa !20
  %4503 = icmp slt i64 %4501, %4502
  br i1 %4503, label %4393, label %4504, !llvm.loop !136

4504:                                             ; preds = %4393, %4379, %4365
  %4505 = getelementptr inbounds nuw i8, ptr %4366, i64 192
  br label %4506

4506:                                             ; preds = %4504, %4665
  %4507 = phi i64 [ 0, %4504 ], [ %4666, %4665 ]
  %4508 = getelementptr inbounds nuw i64, ptr %13, i64 %4507
  %4509 = load i64, ptr %4508, align 8, !tbaa !30
  %4510 = icmp eq i64 %4509, 0
  br i1 %4510, label %4665, label %4511

4511:                                             ; preds = %4506
  %4512 = getelementptr inbounds nuw [8 x i64], ptr %238, i64 0, i64 %4507
  %4513 = load i64, ptr %4512, align 8, !tbaa !30
  %4514 = load i64, ptr %239, align 8, !tbaa !137
  %4515 = icmp eq i64 %4513, %4514
  br i1 %4515, label %4519, label %4516

4516:                                             ; preds = %4511
  %4517 = getelementptr inbounds nuw [8 x ptr], ptr %243, i64 0, i64 %4507
  %4518 = load ptr, ptr %4517, align 8, !tbaa !138
  br label %4534

4519:                                             ; preds = %4511
  %4520 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %4507
  %4521 = load i64, ptr %4520, align 8, !tbaa !30
  %4522 = load ptr, ptr %240, align 8, !tbaa !139
  %4523 = load i64, ptr %134, align 8, !tbaa !42
  %4524 = getelementptr inbounds i64, ptr %4522, i64 %4523
  store i64 %4521, ptr %4524, align 8, !tbaa !30
  %4525 = load ptr, ptr %241, align 8, !tbaa !140
  %4526 = load i64, ptr %134, align 8, !tbaa !42
  %4527 = add nsw i64 %4526, 1
  store i64 %4527, ptr %134, align 8, !tbaa !42
  %4528 = load i64, ptr %239, align 8, !tbaa !137
  %4529 = mul nsw i64 %4528, %4526
  %4530 = load i64, ptr %242, align 8, !tbaa !15
  %4531 = mul nsw i64 %4529, %4530
  %4532 = getelementptr inbounds double, ptr %4525, i64 %4531
  %4533 = getelementptr inbounds nuw [8 x ptr], ptr %243, i64 0, i64 %4507
  store ptr %4532, ptr %4533, align 8, !tbaa !138
  br label %4534

4534:                                             ; preds = %4516, %4519
  %4535 = phi i64 [ %4513, %4516 ], [ 0, %4519 ]
  %4536 = phi ptr [ %4518, %4516 ], [ %4532, %4519 ]
  %4537 = add nsw i64 %4535, 1
  store i64 %4537, ptr %4512, align 8, !tbaa !30
  %4538 = load i64, ptr %242, align 8, !tbaa !15
  %4539 = mul nsw i64 %4538, %4535
  %4540 = getelementptr inbounds double, ptr %4536, i64 %4539
  %4541 = load ptr, ptr %235, align 64, !tbaa !38
  %4542 = icmp ult ptr %4541, %4362
  br i1 %4542, label %4608, label %4543

4543:                                             ; preds = %4608, %4534
  %4544 = phi ptr [ %4540, %4534 ], [ %4613, %4608 ]
  %4545 = load i64, ptr %150, align 64, !tbaa !16
  %4546 = icmp sgt i64 %4545, 0
  br i1 %4546, label %4547, label %4595

4547:                                             ; preds = %4543
  %4548 = trunc nuw nsw i64 %4507 to i32
  %4549 = and i64 %4545, 3
  %4550 = icmp ult i64 %4545, 4
  br i1 %4550, label %4579, label %4551

4551:                                             ; preds = %4547
  %4552 = and i64 %4545, 9223372036854775804
  br label %4553

4553:                                             ; preds = %4553, %4551
  %4554 = phi i64 [ 0, %4551 ], [ %4576, %4553 ]
  %4555 = phi ptr [ %4544, %4551 ], [ %4573, %4553 ]
  %4556 = phi i64 [ 0, %4551 ], [ %4577, %4553 ]
  %4557 = getelementptr inbounds nuw <8 x double>, ptr %4362, i64 %4554
  %4558 = getelementptr i8, ptr %4555, i64 8
  %4559 = load <8 x double>, ptr %4557, align 64, !tbaa !26
  %4560 = extractelement <8 x double> %4559, i32 %4548
  store double %4560, ptr %4555, align 8, !tbaa !43
  %4561 = or disjoint i64 %4554, 1
  %4562 = getelementptr inbounds nuw <8 x double>, ptr %4362, i64 %4561
  %4563 = getelementptr i8, ptr %4555, i64 16
  %4564 = load <8 x double>, ptr %4562, align 64, !tbaa !26
  %4565 = extractelement <8 x double> %4564, i32 %4548
  store double %4565, ptr %4558, align 8, !tbaa !43
  %4566 = or disjoint i64 %4554, 2
  %4567 = getelementptr inbounds nuw <8 x double>, ptr %4362, i64 %4566
  %4568 = getelementptr i8, ptr %4555, i64 24
  %4569 = load <8 x double>, ptr %4567, align 64, !tbaa !26
  %4570 = extractelement <8 x double> %4569, i32 %4548
  store double %4570, ptr %4563, align 8, !tbaa !43
  %4571 = or disjoint i64 %4554, 3
  %4572 = getelementptr inbounds nuw <8 x double>, ptr %4362, i64 %4571
  %4573 = getelementptr i8, ptr %4555, i64 32
  %4574 = load <8 x double>, ptr %4572, align 64, !tbaa !26
  %4575 = extractelement <8 x double> %4574, i32 %4548
  store double %4575, ptr %4568, align 8, !tbaa !43
  %4576 = add nuw nsw i64 %4554, 4
  %4577 = add i64 %4556, 4
  %4578 = icmp eq i64 %4577, %4552
  br i1 %4578, label %4579, label %4553, !llvm.loop !141

4579:                                             ; preds = %4553, %4547
  %4580 = phi ptr [ poison, %4547 ], [ %4573, %4553 ]
  %4581 = phi i64 [ 0, %4547 ], [ %4576, %4553 ]
  %4582 = phi ptr [ %4544, %4547 ], [ %4573, %4553 ]
  %4583 = icmp eq i64 %4549, 0
  br i1 %4583, label %4595, label %4584

4584:                                             ; preds = %4579, %4584
  %4585 = phi i64 [ %4592, %4584 ], [ %4581, %4579 ]
  %4586 = phi ptr [ %4589, %4584 ], [ %4582, %4579 ]
  %4587 = phi i64 [ %4593, %4584 ], [ 0, %4579 ]
  %4588 = getelementptr inbounds nuw <8 x double>, ptr %4362, i64 %4585
  %4589 = getelementptr i8, ptr %4586, i64 8
  %4590 = load <8 x double>, ptr %4588, align 64, !tbaa !26
  %4591 = extractelement <8 x double> %4590, i32 %4548
  store double %4591, ptr %4586, align 8, !tbaa !43
  %4592 = add nuw nsw i64 %4585, 1
  %4593 = add i64 %4587, 1
  %4594 = icmp eq i64 %4593, %4549
  br i1 %4594, label %4595, label %4584, !llvm.loop !142

4595:                                             ; preds = %4579, %4584, %4543
  %4596 = phi ptr [ %4544, %4543 ], [ %4580, %4579 ], [ %4589, %4584 ]
  %4597 = load i64, ptr %237, align 8, !tbaa !134
  %4598 = icmp eq i64 %4597, 0
  br i1 %4598, label %4665, label %4599

4599:                                             ; preds = %4595
  %4600 = getelementptr inbounds nuw double, ptr %4366, i64 %4507
  %4601 = load double, ptr %4600, align 8, !tbaa !43
  %4602 = getelementptr inbounds nuw i8, ptr %4596, i64 8
  store double %4601, ptr %4596, align 8, !tbaa !43
  %4603 = getelementptr inbounds nuw i8, ptr %4600, i64 64
  %4604 = load double, ptr %4603, align 8, !tbaa !43
  %4605 = getelementptr inbounds nuw i8, ptr %4596, i64 16
  store double %4604, ptr %4602, align 8, !tbaa !43
  %4606 = getelementptr inbounds nuw i8, ptr %4600, i64 128
  %4607 = load double, ptr %4606, align 8, !tbaa !43
  store double %4607, ptr %4605, align 8, !tbaa !43
  br i1 %4546, label %4616, label %4665

4608:                                             ; preds = %4534, %4608
  %4609 = phi ptr [ %4614, %4608 ], [ %4541, %4534 ]
  %4610 = phi ptr [ %4613, %4608 ], [ %4540, %4534 ]
  %4611 = getelementptr inbounds nuw double, ptr %4609, i64 %4507
  %4612 = load double, ptr %4611, align 8, !tbaa !43
  %4613 = getelementptr inbounds nuw i8, ptr %4610, i64 8
  store double %4612, ptr %4610, align 8, !tbaa !43
  %4614 = getelementptr inbounds nuw i8, ptr %4609, i64 64
  %4615 = icmp ult ptr %4614, %4362
  br i1 %4615, label %4608, label %4543, !llvm.loop !144

4616:                                             ; preds = %4599
  %4617 = getelementptr inbounds nuw i8, ptr %4596, i64 24
  %4618 = trunc nuw nsw i64 %4507 to i32
  br label %4619

4619:                                             ; preds = %4616, %4619
  %4620 = phi i64 [ %4663, %4619 ], [ 0, %4616 ]
  %4621 = phi ptr [ %4662, %4619 ], [ %4617, %4616 ]
  %4622 = mul nuw nsw i64 %4620, 640
  %4623 = getelementptr inbounds nuw i8, ptr %4505, i64 %4622
  %4624 = load <8 x double>, ptr %4623, align 64, !tbaa !26
  %4625 = extractelement <8 x double> %4624, i32 %4618
  %4626 = getelementptr inbounds nuw i8, ptr %4621, i64 8
  store double %4625, ptr %4621, align 8, !tbaa !43
  %4627 = getelementptr inbounds nuw i8, ptr %4623, i64 64
  %4628 = load <8 x double>, ptr %4627, align 64, !tbaa !26
  %4629 = extractelement <8 x double> %4628, i32 %4618
  %4630 = getelementptr inbounds nuw i8, ptr %4621, i64 16
  store double %4629, ptr %4626, align 8, !tbaa !43
  %4631 = getelementptr inbounds nuw i8, ptr %4623, i64 128
  %4632 = load <8 x double>, ptr %4631, align 64, !tbaa !26
  %4633 = extractelement <8 x double> %4632, i32 %4618
  %4634 = getelementptr inbounds nuw i8, ptr %4621, i64 24
  store double %4633, ptr %4630, align 8, !tbaa !43
  %4635 = getelementptr inbounds nuw i8, ptr %4623, i64 192
  %4636 = load <8 x double>, ptr %4635, align 64, !tbaa !26
  %4637 = extractelement <8 x double> %4636, i32 %4618
  %4638 = getelementptr inbounds nuw i8, ptr %4621, i64 32
  store double %4637, ptr %4634, align 8, !tbaa !43
  %4639 = getelementptr inbounds nuw i8, ptr %4623, i64 256
  %4640 = load <8 x double>, ptr %4639, align 64, !tbaa !26
  %4641 = extractelement <8 x double> %4640, i32 %4618
  %4642 = getelementptr inbounds nuw i8, ptr %4621, i64 40
  store double %4641, ptr %4638, align 8, !tbaa !43
  %4643 = getelementptr inbounds nuw i8, ptr %4623, i64 320
  %4644 = load <8 x double>, ptr %4643, align 64, !tbaa !26
  %4645 = extractelement <8 x double> %4644, i32 %4618
  %4646 = getelementptr inbounds nuw i8, ptr %4621, i64 48
  store double %4645, ptr %4642, align 8, !tbaa !43
  %4647 = getelementptr inbounds nuw i8, ptr %4623, i64 384
  %4648 = load <8 x double>, ptr %4647, align 64, !tbaa !26
  %4649 = extractelement <8 x double> %4648, i32 %4618
  %4650 = getelementptr inbounds nuw i8, ptr %4621, i64 56
  store double %4649, ptr %4646, align 8, !tbaa !43
  %4651 = getelementptr inbounds nuw i8, ptr %4623, i64 448
  %4652 = load <8 x double>, ptr %4651, align 64, !tbaa !26
  %4653 = extractelement <8 x double> %4652, i32 %4618
  %4654 = getelementptr inbounds nuw i8, ptr %4621, i64 64
  store double %4653, ptr %4650, align 8, !tbaa !43
  %4655 = getelementptr inbounds nuw i8, ptr %4623, i64 512
  %4656 = load <8 x double>, ptr %4655, align 64, !tbaa !26
  %4657 = extractelement <8 x double> %4656, i32 %4618
  %4658 = getelementptr inbounds nuw i8, ptr %4621, i64 72
  store double %4657, ptr %4654, align 8, !tbaa !43
  %4659 = getelementptr inbounds nuw i8, ptr %4623, i64 576
  %4660 = load <8 x double>, ptr %4659, align 64, !tbaa !26
  %4661 = extractelement <8 x double> %4660, i32 %4618
  %4662 = getelementptr inbounds nuw i8, ptr %4621, i64 80
  store double %4661, ptr %4658, align 8, !tbaa !43
  %4663 = add nuw nsw i64 %4620, 1
  %4664 = icmp eq i64 %4663, %4545
  br i1 %4664, label %4665, label %4619, !llvm.loop !141

4665:                                             ; preds = %4619, %4599, %4595, %4506
  %4666 = add nuw nsw i64 %4507, 1
  %4667 = icmp eq i64 %4666, 8
  br i1 %4667, label %4668, label %4506, !llvm.loop !145

4668:                                             ; preds = %4665
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %4669 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4670 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4671 = fsub <8 x double> %4669, %4670
  %4672 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %4673 = fadd <8 x double> %4672, splat (double -1.000000e-09)
  %4674 = fcmp oge <8 x double> %4671, %4673
  %4675 = select <8 x i1> %4674, <8 x i64> %3552, <8 x i64> zeroinitializer
  %4676 = load i64, ptr %166, align 8, !tbaa !20
  %4677 = icmp sgt i64 %4676, 0
  br i1 %4677, label %4678, label %4710

4678:                                             ; preds = %4668
  %4679 = load ptr, ptr %151, align 8, !tbaa !28
  %4680 = and i64 %4676, 1
  %4681 = icmp eq i64 %4676, 1
  br i1 %4681, label %4700, label %4682

4682:                                             ; preds = %4678
  %4683 = and i64 %4676, 9223372036854775806
  br label %4684

4684:                                             ; preds = %4684, %4682
  %4685 = phi i64 [ 0, %4682 ], [ %4697, %4684 ]
  %4686 = phi <8 x double> [ splat (double 1.000000e+09), %4682 ], [ %4696, %4684 ]
  %4687 = phi i64 [ 0, %4682 ], [ %4698, %4684 ]
  %4688 = getelementptr inbounds nuw %struct.Piece, ptr %4679, i64 %4685, i32 35
  %4689 = load <8 x double>, ptr %4688, align 64, !tbaa !26
  %4690 = fcmp olt <8 x double> %4686, %4689
  %4691 = select <8 x i1> %4690, <8 x double> %4686, <8 x double> %4689
  %4692 = or disjoint i64 %4685, 1
  %4693 = getelementptr inbounds nuw %struct.Piece, ptr %4679, i64 %4692, i32 35
  %4694 = load <8 x double>, ptr %4693, align 64, !tbaa !26
  %4695 = fcmp olt <8 x double> %4691, %4694
  %4696 = select <8 x i1> %4695, <8 x double> %4691, <8 x double> %4694
  %4697 = add nuw nsw i64 %4685, 2
  %4698 = add i64 %4687, 2
  %4699 = icmp eq i64 %4698, %4683
  br i1 %4699, label %4700, label %4684, !llvm.loop !119

4700:                                             ; preds = %4684, %4678
  %4701 = phi <8 x double> [ poison, %4678 ], [ %4696, %4684 ]
  %4702 = phi i64 [ 0, %4678 ], [ %4697, %4684 ]
  %4703 = phi <8 x double> [ splat (double 1.000000e+09), %4678 ], [ %4696, %4684 ]
  %4704 = icmp eq i64 %4680, 0
  br i1 %4704, label %4710, label %4705

4705:                                             ; preds = %4700
  %4706 = getelementptr inbounds nuw %struct.Piece, ptr %4679, i64 %4702, i32 35
  %4707 = load <8 x double>, ptr %4706, align 64, !tbaa !26
  %4708 = fcmp olt <8 x double> %4703, %4707
  %4709 = select <8 x i1> %4708, <8 x double> %4703, <8 x double> %4707
  br label %4710

4710:                                             ; preds = %4705, %4700, %4668
  %4711 = phi <8 x double> [ splat (double 1.000000e+09), %4668 ], [ %4701, %4700 ], [ %4709, %4705 ]
  %4712 = load <8 x double>, ptr %231, align 64, !tbaa !26
  %4713 = select <8 x i1> %3612, <8 x double> %4712, <8 x double> %4711
  store <8 x double> %4713, ptr %231, align 64, !tbaa !26
  %4714 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %4715 = fcmp une <8 x double> %4714, zeroinitializer
  %4716 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %4717 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %4718 = fsub <8 x double> %4716, %4717
  %4719 = fcmp une <8 x double> %4714, splat (double 1.000000e+00)
  %4720 = load <8 x double>, ptr %174, align 64, !tbaa !26
  %4721 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4722 = fsub <8 x double> %4720, %4721
  %4723 = select <8 x i1> %4719, <8 x double> splat (double -1.000000e+00), <8 x double> %4722
  %4724 = fcmp une <8 x double> %4714, splat (double 2.000000e+00)
  %4725 = fsub <8 x double> %4713, %4721
  %4726 = select <8 x i1> %4724, <8 x double> %4723, <8 x double> %4725
  %4727 = fcmp une <8 x double> %4714, splat (double 3.000000e+00)
  %4728 = fsub <8 x double> %4718, %4721
  %4729 = select <8 x i1> %4727, <8 x double> %4726, <8 x double> %4728
  %4730 = fcmp une <8 x double> %4714, splat (double 4.000000e+00)
  %4731 = fsub <8 x double> %4721, %4718
  %4732 = select <8 x i1> %4730, <8 x double> %4729, <8 x double> %4731
  %4733 = fcmp oge <8 x double> %4732, splat (double 0xBEB0C6F7A0B5ED8D)
  %4734 = select <8 x i1> %4733, <8 x i1> %4715, <8 x i1> zeroinitializer
  %4735 = select <8 x i1> %4734, <8 x i64> %3552, <8 x i64> zeroinitializer
  %4736 = xor <8 x i64> %4735, splat (i64 -1)
  %4737 = and <8 x i64> %4675, %4736
  %4738 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %4739 = icmp ne <8 x i64> %4737, zeroinitializer
  %4740 = select <8 x i1> %4715, <8 x i1> %4739, <8 x i1> zeroinitializer
  %4741 = select <8 x i1> %4740, <8 x double> splat (double 2.000000e+00), <8 x double> %4738
  store <8 x double> %4741, ptr %148, align 64, !tbaa !26
  %4742 = or <8 x i64> %4735, %4675
  %4743 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4744 = fadd <8 x double> %4743, splat (double 1.000000e+00)
  %4745 = icmp eq <8 x i64> %4742, zeroinitializer
  %4746 = select <8 x i1> %4745, <8 x double> %4743, <8 x double> %4744
  store <8 x double> %4746, ptr %236, align 64, !tbaa !26
  %4747 = xor <8 x i64> %4742, %3552
  %4748 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4749 = fcmp oeq <8 x double> %4748, zeroinitializer
  %4750 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4751 = fcmp oeq <8 x double> %4750, zeroinitializer
  %4752 = select <8 x i1> %4751, <8 x i1> %4749, <8 x i1> zeroinitializer
  %4753 = select <8 x i1> %4752, <8 x i64> %4747, <8 x i64> zeroinitializer
  %4754 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %4755 = fmul <8 x double> %4754, splat (double 5.000000e-01)
  %4756 = load <8 x double>, ptr %218, align 64, !tbaa !26
  %4757 = fadd <8 x double> %4756, %4755
  %4758 = fadd <8 x double> %4757, splat (double -1.000000e-03)
  %4759 = fcmp ult <8 x double> %4720, %4758
  %4760 = fsub <8 x double> %4756, %4755
  %4761 = fadd <8 x double> %4760, splat (double 1.000000e-03)
  %4762 = fcmp ole <8 x double> %4720, %4761
  %4763 = load <8 x i64>, ptr %176, align 64, !tbaa !26
  %4764 = select <8 x i1> %4762, <8 x i64> splat (i64 -1), <8 x i64> %4763
  %4765 = select <8 x i1> %4759, <8 x i64> %4764, <8 x i64> zeroinitializer
  %4766 = xor <8 x i64> %4765, %4763
  %4767 = and <8 x i64> %4766, %4753
  %4768 = and <8 x i64> %4765, %4753
  %4769 = xor <8 x i64> %4753, splat (i64 -1)
  %4770 = and <8 x i64> %4763, %4769
  %4771 = or <8 x i64> %4768, %4770
  store <8 x i64> %4771, ptr %176, align 64, !tbaa !26
  %4772 = load <8 x i64>, ptr %169, align 64, !tbaa !26
  %4773 = or <8 x i64> %4767, %4772
  store <8 x i64> %4773, ptr %169, align 64, !tbaa !26
  %4774 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4742)
  %4775 = icmp eq i64 %4774, 0
  br i1 %4775, label %4810, label %4776

4776:                                             ; preds = %4710
  %4777 = extractelement <8 x i64> %4742, i64 0
  %4778 = icmp eq i64 %4777, 0
  br i1 %4778, label %4780, label %4779

4779:                                             ; preds = %4776
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %4780

4780:                                             ; preds = %4779, %4776
  %4781 = extractelement <8 x i64> %4742, i64 1
  %4782 = icmp eq i64 %4781, 0
  br i1 %4782, label %4784, label %4783

4783:                                             ; preds = %4780
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %4784

4784:                                             ; preds = %4783, %4780
  %4785 = extractelement <8 x i64> %4742, i64 2
  %4786 = icmp eq i64 %4785, 0
  br i1 %4786, label %4788, label %4787

4787:                                             ; preds = %4784
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %4788

4788:                                             ; preds = %4787, %4784
  %4789 = extractelement <8 x i64> %4742, i64 3
  %4790 = icmp eq i64 %4789, 0
  br i1 %4790, label %4792, label %4791

4791:                                             ; preds = %4788
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %4792

4792:                                             ; preds = %4791, %4788
  %4793 = extractelement <8 x i64> %4742, i64 4
  %4794 = icmp eq i64 %4793, 0
  br i1 %4794, label %4796, label %4795

4795:                                             ; preds = %4792
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %4796

4796:                                             ; preds = %4795, %4792
  %4797 = extractelement <8 x i64> %4742, i64 5
  %4798 = icmp eq i64 %4797, 0
  br i1 %4798, label %4800, label %4799

4799:                                             ; preds = %4796
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %4800

4800:                                             ; preds = %4799, %4796
  %4801 = extractelement <8 x i64> %4742, i64 6
  %4802 = icmp eq i64 %4801, 0
  br i1 %4802, label %4804, label %4803

4803:                                             ; preds = %4800
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %4804

4804:                                             ; preds = %4803, %4800
  %4805 = extractelement <8 x i64> %4742, i64 7
  %4806 = icmp eq i64 %4805, 0
  br i1 %4806, label %4808, label %4807

4807:                                             ; preds = %4804
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %4808

4808:                                             ; preds = %4807, %4804
  %4809 = load <8 x double>, ptr %148, align 64, !tbaa !26
  br label %4810

4810:                                             ; preds = %4808, %4710
  %4811 = phi <8 x double> [ %4809, %4808 ], [ %4741, %4710 ]
  %4812 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4813 = load <8 x double>, ptr %244, align 64, !tbaa !26
  %4814 = fadd <8 x double> %4813, splat (double -1.000000e+00)
  %4815 = fcmp oge <8 x double> %4812, %4814
  %4816 = select <8 x i1> %4815, <8 x i64> %3552, <8 x i64> zeroinitializer
  %4817 = icmp eq <8 x i64> %4816, zeroinitializer
  %4818 = select <8 x i1> %4817, <8 x double> %4811, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %4818, ptr %148, align 64, !tbaa !26
  %4819 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4816)
  %4820 = icmp eq i64 %4819, 0
  br i1 %4820, label %546, label %4821

4821:                                             ; preds = %4810
  %4822 = extractelement <8 x i64> %4816, i64 0
  %4823 = icmp eq i64 %4822, 0
  br i1 %4823, label %4825, label %4824

4824:                                             ; preds = %4821
  store double 1.000000e+00, ptr %140, align 8, !tbaa !43
  br label %4825

4825:                                             ; preds = %4824, %4821
  %4826 = extractelement <8 x i64> %4816, i64 1
  %4827 = icmp eq i64 %4826, 0
  br i1 %4827, label %4829, label %4828

4828:                                             ; preds = %4825
  store double 1.000000e+00, ptr %274, align 8, !tbaa !43
  br label %4829

4829:                                             ; preds = %4828, %4825
  %4830 = extractelement <8 x i64> %4816, i64 2
  %4831 = icmp eq i64 %4830, 0
  br i1 %4831, label %4833, label %4832

4832:                                             ; preds = %4829
  store double 1.000000e+00, ptr %275, align 8, !tbaa !43
  br label %4833

4833:                                             ; preds = %4832, %4829
  %4834 = extractelement <8 x i64> %4816, i64 3
  %4835 = icmp eq i64 %4834, 0
  br i1 %4835, label %4837, label %4836

4836:                                             ; preds = %4833
  store double 1.000000e+00, ptr %276, align 8, !tbaa !43
  br label %4837

4837:                                             ; preds = %4836, %4833
  %4838 = extractelement <8 x i64> %4816, i64 4
  %4839 = icmp eq i64 %4838, 0
  br i1 %4839, label %4841, label %4840

4840:                                             ; preds = %4837
  store double 1.000000e+00, ptr %277, align 8, !tbaa !43
  br label %4841

4841:                                             ; preds = %4840, %4837
  %4842 = extractelement <8 x i64> %4816, i64 5
  %4843 = icmp eq i64 %4842, 0
  br i1 %4843, label %4845, label %4844

4844:                                             ; preds = %4841
  store double 1.000000e+00, ptr %278, align 8, !tbaa !43
  br label %4845

4845:                                             ; preds = %4844, %4841
  %4846 = extractelement <8 x i64> %4816, i64 6
  %4847 = icmp eq i64 %4846, 0
  br i1 %4847, label %4849, label %4848

4848:                                             ; preds = %4845
  store double 1.000000e+00, ptr %279, align 8, !tbaa !43
  br label %4849

4849:                                             ; preds = %4848, %4845
  %4850 = extractelement <8 x i64> %4816, i64 7
  %4851 = icmp eq i64 %4850, 0
  br i1 %4851, label %546, label %4852

4852:                                             ; preds = %4849
  store double 1.000000e+00, ptr %280, align 8, !tbaa !43
  br label %546

4853:                                             ; preds = %546, %551, %131
  %4854 = phi i64 [ 0, %131 ], [ 1, %551 ], [ 0, %546 ]
  ret i64 %4854
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
