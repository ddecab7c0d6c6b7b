; Made by scripts/lanes.py from sources of sha256 69ce26ae16fd7a35379d8efc9e6fb515de9795eacdbd9ef44af629a8ad650b5d.
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
  %115 = getelementptr inbounds nuw i8, ptr %1, i64 6144
  store ptr %114, ptr %115, align 64, !tbaa !38
  %116 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %117 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  br label %118

118:                                              ; preds = %113, %128
  %119 = phi i64 [ 0, %113 ], [ %129, %128 ]
  %120 = load i64, ptr %34, align 8, !tbaa !27
  %121 = load i64, ptr %0, align 8, !tbaa !39
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
  br i1 %130, label %131, label %118, !llvm.loop !40

131:                                              ; preds = %128, %3
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %135 = load i64, ptr %133, align 8, !tbaa !41
  %136 = load i64, ptr %134, align 8, !tbaa !42
  %137 = sub nsw i64 %135, %136
  %138 = icmp slt i64 %137, 16
  br i1 %138, label %5084, label %139

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
  %189 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %191 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %192 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 1408
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
  %292 = load double, ptr %291, align 8, !tbaa !43
  %293 = fcmp oeq double %292, 0.000000e+00
  br i1 %293, label %541, label %294

294:                                              ; preds = %290
  %295 = load i64, ptr %141, align 16, !tbaa !21
  %296 = load i64, ptr %142, align 8, !tbaa !22
  %297 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %285
  %298 = load i64, ptr %297, align 8, !tbaa !30
  %299 = load ptr, ptr %144, align 8, !tbaa !44
  %300 = mul nsw i64 %298, 40
  %301 = getelementptr inbounds i8, ptr %299, i64 %300
  %302 = getelementptr inbounds nuw double, ptr %145, i64 %285
  %303 = load double, ptr %302, align 8, !tbaa !43
  store double %303, ptr %301, align 8, !tbaa !43
  %304 = getelementptr inbounds nuw double, ptr %146, i64 %285
  %305 = load double, ptr %304, align 8, !tbaa !43
  %306 = getelementptr inbounds nuw i8, ptr %301, i64 8
  store double %305, ptr %306, align 8, !tbaa !43
  %307 = getelementptr inbounds nuw double, ptr %147, i64 %285
  %308 = load double, ptr %307, align 8, !tbaa !43
  %309 = getelementptr inbounds nuw i8, ptr %301, i64 16
  store double %308, ptr %309, align 8, !tbaa !43
  %310 = getelementptr inbounds nuw double, ptr %148, i64 %285
  %311 = load double, ptr %310, align 8, !tbaa !43
  %312 = getelementptr inbounds nuw i8, ptr %301, i64 24
  store double %311, ptr %312, align 8, !tbaa !43
  %313 = getelementptr inbounds nuw double, ptr %149, i64 %285
  %314 = load double, ptr %313, align 8, !tbaa !43
  %315 = getelementptr inbounds nuw i8, ptr %301, i64 32
  store double %314, ptr %315, align 8, !tbaa !43
  %316 = load i64, ptr %150, align 64, !tbaa !16
  %317 = icmp sgt i64 %316, 0
  br i1 %317, label %318, label %525

318:                                              ; preds = %294
  %319 = load ptr, ptr %151, align 8, !tbaa !28
  %320 = load ptr, ptr %152, align 8, !tbaa !45
  %321 = mul nsw i64 %316, %298
  %322 = mul i64 %295, 3
  %323 = load ptr, ptr %153, align 8, !tbaa !46
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
  %338 = load double, ptr %337, align 8, !tbaa !43
  %339 = getelementptr inbounds nuw i8, ptr %335, i64 4352
  %340 = getelementptr inbounds nuw double, ptr %339, i64 %285
  %341 = load double, ptr %340, align 8, !tbaa !43
  %342 = add nsw i64 %334, %321
  %343 = mul i64 %322, %342
  %344 = getelementptr inbounds double, ptr %320, i64 %343
  %345 = mul nsw i64 %342, 40
  %346 = getelementptr inbounds i8, ptr %323, i64 %345
  br i1 %324, label %347, label %364

347:                                              ; preds = %333
  %348 = getelementptr inbounds nuw i8, ptr %335, i64 7568
  %349 = load ptr, ptr %348, align 16, !tbaa !47
  %350 = getelementptr inbounds nuw i8, ptr %335, i64 7600
  %351 = load ptr, ptr %350, align 16, !tbaa !48
  %352 = getelementptr double, ptr %351, i64 %285
  %353 = getelementptr double, ptr %344, i64 %295
  %354 = getelementptr inbounds nuw i8, ptr %335, i64 7656
  %355 = load ptr, ptr %354, align 8, !tbaa !49
  %356 = getelementptr inbounds nuw i8, ptr %335, i64 7552
  %357 = load i64, ptr %356, align 64, !tbaa !31
  %358 = getelementptr inbounds nuw i8, ptr %335, i64 4416
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
  %367 = getelementptr inbounds nuw i8, ptr %335, i64 7736
  %368 = load ptr, ptr %367, align 8, !tbaa !50
  %369 = getelementptr double, ptr %368, i64 %285
  %370 = getelementptr inbounds nuw i8, ptr %335, i64 768
  %371 = getelementptr inbounds nuw double, ptr %370, i64 %285
  %372 = load double, ptr %371, align 8, !tbaa !43
  %373 = getelementptr inbounds nuw i8, ptr %335, i64 7688
  %374 = load ptr, ptr %373, align 8, !tbaa !51
  %375 = getelementptr double, ptr %374, i64 %285
  %376 = load double, ptr %369, align 8, !tbaa !43
  br i1 %330, label %419, label %502

377:                                              ; preds = %408, %347
  %378 = phi double [ %341, %347 ], [ %416, %408 ]
  %379 = phi i64 [ 0, %347 ], [ %417, %408 ]
  %380 = getelementptr inbounds nuw <8 x double>, ptr %349, i64 %379
  %381 = getelementptr inbounds nuw double, ptr %380, i64 %285
  %382 = load double, ptr %381, align 8, !tbaa !43
  %383 = getelementptr inbounds nuw double, ptr %344, i64 %379
  store double %382, ptr %383, align 8, !tbaa !43
  %384 = getelementptr <8 x double>, ptr %352, i64 %379
  %385 = load double, ptr %384, align 8, !tbaa !43
  %386 = getelementptr double, ptr %353, i64 %379
  store double %385, ptr %386, align 8, !tbaa !43
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
  %413 = load double, ptr %325, align 8, !tbaa !43
  %414 = getelementptr double, ptr %363, i64 %379
  store double %413, ptr %414, align 8, !tbaa !43
  %415 = load double, ptr %327, align 8, !tbaa !43
  %416 = fadd double %378, %415
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %417 = add nuw nsw i64 %379, 1
  %418 = icmp eq i64 %417, %295
  br i1 %418, label %364, label %377, !llvm.loop !52

419:                                              ; preds = %502, %366
  %420 = phi double [ poison, %366 ], [ %522, %502 ]
  %421 = phi double [ %376, %366 ], [ %517, %502 ]
  %422 = phi double [ %365, %366 ], [ %522, %502 ]
  %423 = phi i64 [ 0, %366 ], [ %515, %502 ]
  br i1 %332, label %433, label %424

424:                                              ; preds = %419
  %425 = getelementptr <8 x double>, ptr %369, i64 %423
  %426 = getelementptr i8, ptr %425, i64 64
  %427 = load double, ptr %426, align 8, !tbaa !43
  %428 = fsub double %427, %421
  %429 = fmul double %372, %428
  %430 = getelementptr <8 x double>, ptr %375, i64 %423
  %431 = load double, ptr %430, align 8, !tbaa !43
  %432 = tail call double @llvm.fmuladd.f64(double %429, double %431, double %422)
  br label %433

433:                                              ; preds = %424, %419, %364
  %434 = phi double [ %365, %364 ], [ %420, %419 ], [ %432, %424 ]
  %435 = getelementptr inbounds nuw i8, ptr %335, i64 960
  %436 = getelementptr inbounds nuw double, ptr %435, i64 %285
  %437 = load double, ptr %436, align 8, !tbaa !43
  %438 = getelementptr inbounds nuw i8, ptr %335, i64 384
  %439 = getelementptr inbounds nuw double, ptr %438, i64 %285
  %440 = load double, ptr %439, align 8, !tbaa !43
  %441 = getelementptr inbounds nuw i8, ptr %335, i64 448
  %442 = getelementptr inbounds nuw double, ptr %441, i64 %285
  %443 = load double, ptr %442, align 8, !tbaa !43
  %444 = getelementptr inbounds nuw i8, ptr %335, i64 512
  %445 = getelementptr inbounds nuw double, ptr %444, i64 %285
  %446 = load double, ptr %445, align 8, !tbaa !43
  %447 = fmul double %437, %446
  %448 = fdiv double %447, 3.000000e+00
  %449 = tail call double @llvm.fmuladd.f64(double %443, double 5.000000e-01, double %448)
  %450 = tail call double @llvm.fmuladd.f64(double %437, double %449, double %440)
  %451 = fmul double %437, %450
  %452 = getelementptr inbounds nuw i8, ptr %335, i64 1408
  %453 = getelementptr inbounds nuw double, ptr %452, i64 %285
  %454 = load double, ptr %453, align 8, !tbaa !43
  %455 = fsub double %454, %338
  %456 = getelementptr inbounds nuw i8, ptr %335, i64 640
  %457 = getelementptr inbounds nuw double, ptr %456, i64 %285
  %458 = load double, ptr %457, align 8, !tbaa !43
  %459 = fmul double %338, %458
  %460 = fmul double %437, %459
  %461 = tail call double @llvm.fmuladd.f64(double %455, double %451, double %460)
  %462 = getelementptr inbounds nuw i8, ptr %335, i64 4096
  %463 = getelementptr inbounds nuw double, ptr %462, i64 %285
  %464 = load double, ptr %463, align 8, !tbaa !43
  %465 = getelementptr inbounds nuw i8, ptr %335, i64 4160
  %466 = getelementptr inbounds nuw double, ptr %465, i64 %285
  %467 = load double, ptr %466, align 8, !tbaa !43
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
  store double %483, ptr %346, align 8, !tbaa !43
  %484 = getelementptr inbounds nuw i8, ptr %335, i64 4032
  %485 = getelementptr inbounds nuw double, ptr %484, i64 %285
  %486 = load double, ptr %485, align 8, !tbaa !43
  %487 = getelementptr inbounds nuw i8, ptr %346, i64 8
  store double %486, ptr %487, align 8, !tbaa !43
  %488 = getelementptr inbounds nuw i8, ptr %335, i64 3840
  %489 = getelementptr inbounds nuw double, ptr %488, i64 %285
  %490 = load double, ptr %489, align 8, !tbaa !43
  %491 = getelementptr inbounds nuw i8, ptr %346, i64 16
  store double %490, ptr %491, align 8, !tbaa !43
  %492 = getelementptr inbounds nuw i8, ptr %335, i64 3904
  %493 = getelementptr inbounds nuw double, ptr %492, i64 %285
  %494 = load double, ptr %493, align 8, !tbaa !43
  %495 = getelementptr inbounds nuw i8, ptr %346, i64 24
  store double %494, ptr %495, align 8, !tbaa !43
  %496 = getelementptr inbounds nuw i8, ptr %335, i64 3776
  %497 = getelementptr inbounds nuw double, ptr %496, i64 %285
  %498 = load double, ptr %497, align 8, !tbaa !43
  %499 = getelementptr inbounds nuw i8, ptr %346, i64 32
  store double %498, ptr %499, align 8, !tbaa !43
  %500 = add nuw nsw i64 %334, 1
  %501 = icmp eq i64 %500, %316
  br i1 %501, label %525, label %333, !llvm.loop !53

502:                                              ; preds = %366, %502
  %503 = phi double [ %517, %502 ], [ %376, %366 ]
  %504 = phi double [ %522, %502 ], [ %365, %366 ]
  %505 = phi i64 [ %515, %502 ], [ 0, %366 ]
  %506 = phi i64 [ %523, %502 ], [ 0, %366 ]
  %507 = or disjoint i64 %505, 1
  %508 = getelementptr <8 x double>, ptr %369, i64 %507
  %509 = load double, ptr %508, align 8, !tbaa !43
  %510 = fsub double %509, %503
  %511 = fmul double %372, %510
  %512 = getelementptr <8 x double>, ptr %375, i64 %505
  %513 = load double, ptr %512, align 8, !tbaa !43
  %514 = tail call double @llvm.fmuladd.f64(double %511, double %513, double %504)
  %515 = add nuw nsw i64 %505, 2
  %516 = getelementptr <8 x double>, ptr %369, i64 %515
  %517 = load double, ptr %516, align 8, !tbaa !43
  %518 = fsub double %517, %509
  %519 = fmul double %372, %518
  %520 = getelementptr <8 x double>, ptr %375, i64 %507
  %521 = load double, ptr %520, align 8, !tbaa !43
  %522 = tail call double @llvm.fmuladd.f64(double %519, double %521, double %514)
  %523 = add i64 %506, 2
  %524 = icmp eq i64 %523, %331
  br i1 %524, label %419, label %502, !llvm.loop !54

525:                                              ; preds = %433, %294
  %526 = load i64, ptr %154, align 8, !tbaa !27
  %527 = load i64, ptr %0, align 8, !tbaa !39
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
  %536 = load double, ptr %291, align 8, !tbaa !43
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
  br label %284, !llvm.loop !55

548:                                              ; preds = %541
  br i1 %542, label %554, label %549

549:                                              ; preds = %5041, %5083, %5080, %3292, %3574, %548
  %550 = load i64, ptr %133, align 8, !tbaa !41
  %551 = load i64, ptr %134, align 8, !tbaa !42
  %552 = sub nsw i64 %550, %551
  %553 = icmp slt i64 %552, 16
  br i1 %553, label %5084, label %545

554:                                              ; preds = %548
  %555 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %556 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %555)
  %557 = icmp eq i64 %556, 0
  br i1 %557, label %5084, label %558

558:                                              ; preds = %554
  %559 = load <8 x i64>, ptr %155, align 64, !tbaa !26
  %560 = and <8 x i64> %559, %555
  %561 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %560)
  %562 = icmp eq i64 %561, 0
  %563 = load i64, ptr %178, align 8, !tbaa !20
  br i1 %562, label %1185, label %564

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
  br i1 %628, label %629, label %676

629:                                              ; preds = %564
  %630 = load ptr, ptr %151, align 8, !tbaa !28
  br label %631

631:                                              ; preds = %629, %631
  %632 = phi <8 x double> [ %627, %629 ], [ %673, %631 ]
  %633 = phi i64 [ 0, %629 ], [ %674, %631 ]
  %634 = getelementptr inbounds nuw %struct.Piece, ptr %630, i64 %633
  %635 = getelementptr inbounds nuw i8, ptr %634, i64 3776
  %636 = load <8 x double>, ptr %635, align 64, !tbaa !26
  %637 = getelementptr inbounds nuw i8, ptr %634, i64 1472
  %638 = load <8 x double>, ptr %637, align 64, !tbaa !26
  %639 = fsub <8 x double> %636, %638
  %640 = getelementptr inbounds nuw i8, ptr %634, i64 832
  %641 = load <8 x double>, ptr %640, align 64, !tbaa !26
  %642 = fmul <8 x double> %639, %641
  %643 = getelementptr inbounds nuw i8, ptr %634, i64 1600
  %644 = load <8 x double>, ptr %643, align 64, !tbaa !26
  %645 = getelementptr inbounds nuw i8, ptr %634, i64 4032
  %646 = load <8 x double>, ptr %645, align 64, !tbaa !26
  %647 = fsub <8 x double> %644, %646
  %648 = getelementptr inbounds nuw i8, ptr %634, i64 7360
  %649 = load <8 x i64>, ptr %648, align 64, !tbaa !26
  %650 = getelementptr inbounds nuw i8, ptr %634, i64 7296
  %651 = load <8 x double>, ptr %650, align 64, !tbaa !26
  %652 = fcmp une <8 x double> %651, splat (double 1.000000e+00)
  %653 = select <8 x i1> %652, <8 x double> %642, <8 x double> %647
  %654 = getelementptr inbounds nuw i8, ptr %634, i64 3840
  %655 = load <8 x double>, ptr %654, align 64, !tbaa !26
  %656 = icmp eq <8 x i64> %649, zeroinitializer
  %657 = select <8 x i1> %656, <8 x double> %655, <8 x double> %653
  %658 = getelementptr inbounds nuw i8, ptr %634, i64 5632
  %659 = load <8 x double>, ptr %658, align 64, !tbaa !26
  %660 = getelementptr inbounds nuw i8, ptr %634, i64 7168
  %661 = load <8 x double>, ptr %660, align 64, !tbaa !26
  %662 = fdiv <8 x double> %661, %604
  %663 = select <8 x i1> %656, <8 x double> %662, <8 x double> zeroinitializer
  %664 = fsub <8 x double> %659, %663
  %665 = fcmp ule <8 x double> %657, zeroinitializer
  %666 = fcmp ule <8 x double> %664, zeroinitializer
  %667 = or <8 x i1> %665, %666
  %668 = fdiv <8 x double> %657, %664
  %669 = fcmp ogt <8 x double> %668, splat (double 1.000000e-03)
  %670 = select <8 x i1> %669, <8 x double> %668, <8 x double> splat (double 1.000000e-03)
  %671 = select <8 x i1> %667, <8 x double> splat (double 1.000000e+09), <8 x double> %670
  %672 = fcmp olt <8 x double> %632, %671
  %673 = select <8 x i1> %672, <8 x double> %632, <8 x double> %671
  %674 = add nuw nsw i64 %633, 1
  %675 = icmp eq i64 %674, %563
  br i1 %675, label %676, label %631, !llvm.loop !56

676:                                              ; preds = %631, %564
  %677 = phi <8 x double> [ %627, %564 ], [ %673, %631 ]
  %678 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %679 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %680 = fadd <8 x double> %678, %679
  %681 = fsub <8 x double> %680, %567
  %682 = fmul <8 x double> %677, splat (double 1.050000e+00)
  %683 = fcmp ugt <8 x double> %681, %682
  %684 = select <8 x i1> %683, <8 x double> %677, <8 x double> %681
  %685 = fmul <8 x double> %580, splat (double 0x3FF000010C6F7A0B)
  %686 = fcmp ole <8 x double> %684, %685
  %687 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %688 = fcmp ogt <8 x double> %687, %580
  %689 = select <8 x i1> %688, <8 x double> %687, <8 x double> %580
  %690 = icmp ne <8 x i64> %560, zeroinitializer
  %691 = select <8 x i1> %686, <8 x i1> %690, <8 x i1> zeroinitializer
  %692 = select <8 x i1> %691, <8 x double> %689, <8 x double> %687
  store <8 x double> %692, ptr %181, align 64, !tbaa !26
  %693 = fmul <8 x double> %580, splat (double 2.000000e+00)
  %694 = fcmp uge <8 x double> %684, %693
  %695 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %696 = fcmp une <8 x double> %695, zeroinitializer
  %697 = or <8 x i1> %696, %694
  %698 = fmul <8 x double> %684, splat (double 5.000000e-01)
  %699 = select <8 x i1> %697, <8 x double> %580, <8 x double> %698
  %700 = select <8 x i1> %686, <8 x double> %684, <8 x double> %699
  %701 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %702 = icmp eq <8 x i64> %560, zeroinitializer
  %703 = select <8 x i1> %702, <8 x double> %701, <8 x double> %700
  store <8 x double> %703, ptr %182, align 64, !tbaa !26
  %704 = fdiv <8 x double> %703, %604
  %705 = fdiv <8 x double> splat (double 1.000000e+00), %703
  %706 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %704, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %707 = fadd <8 x double> %704, splat (double 1.000000e+00)
  %708 = fdiv <8 x double> %706, %707
  %709 = fmul <8 x double> %705, %708
  %710 = icmp eq <8 x i64> %609, zeroinitializer
  %711 = select <8 x i1> %710, <8 x double> %709, <8 x double> %705
  %712 = fneg <8 x double> %705
  %713 = fneg <8 x double> %707
  %714 = fmul <8 x double> %705, %713
  %715 = select <8 x i1> %710, <8 x double> %714, <8 x double> %712
  %716 = fmul <8 x double> %704, %704
  %717 = fdiv <8 x double> %716, %707
  %718 = fmul <8 x double> %705, %717
  %719 = select <8 x i1> %710, <8 x double> %718, <8 x double> zeroinitializer
  %720 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %721 = select <8 x i1> %702, <8 x double> %720, <8 x double> %711
  store <8 x double> %721, ptr %184, align 64, !tbaa !26
  %722 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %723 = select <8 x i1> %702, <8 x double> %722, <8 x double> %715
  store <8 x double> %723, ptr %185, align 64, !tbaa !26
  %724 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %725 = select <8 x i1> %702, <8 x double> %724, <8 x double> %719
  store <8 x double> %725, ptr %186, align 64, !tbaa !26
  %726 = select <8 x i1> %710, <8 x double> %704, <8 x double> zeroinitializer
  %727 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %726, <8 x double> %603, <8 x double> %589)
  %728 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %729 = select <8 x i1> %702, <8 x double> %728, <8 x double> %727
  %730 = load <8 x double>, ptr %249, align 64, !tbaa !26
  %731 = load <8 x double>, ptr %250, align 64, !tbaa !26
  %732 = fsub <8 x double> %730, %731
  %733 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %726, <8 x double> %732, <8 x double> %730)
  %734 = load <8 x double>, ptr %248, align 64, !tbaa !26
  %735 = select <8 x i1> %702, <8 x double> %734, <8 x double> %733
  store <8 x double> %735, ptr %248, align 64, !tbaa !26
  %736 = load <8 x double>, ptr %252, align 64, !tbaa !26
  %737 = load <8 x double>, ptr %253, align 64, !tbaa !26
  %738 = fsub <8 x double> %736, %737
  %739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %726, <8 x double> %738, <8 x double> %736)
  %740 = load <8 x double>, ptr %251, align 64, !tbaa !26
  %741 = select <8 x i1> %702, <8 x double> %740, <8 x double> %739
  store <8 x double> %741, ptr %251, align 64, !tbaa !26
  %742 = load <8 x double>, ptr %255, align 64, !tbaa !26
  %743 = load <8 x double>, ptr %256, align 64, !tbaa !26
  %744 = fsub <8 x double> %742, %743
  %745 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %726, <8 x double> %744, <8 x double> %742)
  %746 = load <8 x double>, ptr %254, align 64, !tbaa !26
  %747 = select <8 x i1> %702, <8 x double> %746, <8 x double> %745
  store <8 x double> %747, ptr %254, align 64, !tbaa !26
  %748 = load <8 x double>, ptr %258, align 64, !tbaa !26
  %749 = load <8 x double>, ptr %259, align 64, !tbaa !26
  %750 = fsub <8 x double> %748, %749
  %751 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %726, <8 x double> %750, <8 x double> %748)
  %752 = load <8 x double>, ptr %257, align 64, !tbaa !26
  %753 = select <8 x i1> %702, <8 x double> %752, <8 x double> %751
  store <8 x double> %753, ptr %257, align 64, !tbaa !26
  %754 = load <8 x double>, ptr %261, align 64, !tbaa !26
  %755 = load <8 x double>, ptr %262, align 64, !tbaa !26
  %756 = fsub <8 x double> %754, %755
  %757 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %726, <8 x double> %756, <8 x double> %754)
  %758 = load <8 x double>, ptr %260, align 64, !tbaa !26
  %759 = select <8 x i1> %702, <8 x double> %758, <8 x double> %757
  store <8 x double> %759, ptr %260, align 64, !tbaa !26
  %760 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %761 = icmp eq <8 x i64> %760, zeroinitializer
  %762 = select <8 x i1> %761, <8 x double> zeroinitializer, <8 x double> %591
  %763 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %764 = fsub <8 x double> %762, %763
  %765 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %766 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %597, <8 x double> %765, <8 x double> %596)
  %767 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %595, <8 x double> %766, <8 x double> %599)
  %768 = fdiv <8 x double> %764, %767
  %769 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %770 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %771 = or <8 x i64> %770, %769
  %772 = and <8 x i64> %771, %560
  %773 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %703, <8 x double> %768, <8 x double> %765)
  %774 = icmp eq <8 x i64> %772, zeroinitializer
  %775 = select <8 x i1> %621, <8 x i1> splat (i1 true), <8 x i1> %774
  %776 = select <8 x i1> %775, <8 x double> %729, <8 x double> %773
  store <8 x double> %776, ptr %187, align 64, !tbaa !26
  %777 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %778 = select <8 x i1> %702, <8 x double> %777, <8 x double> %764
  store <8 x double> %778, ptr %188, align 64, !tbaa !26
  %779 = xor <8 x i64> %770, splat (i64 -1)
  %780 = and <8 x i64> %769, %779
  store <8 x i64> %780, ptr %175, align 64, !tbaa !26
  %781 = load i64, ptr %178, align 8, !tbaa !20
  %782 = icmp sgt i64 %781, 0
  br i1 %782, label %783, label %1095

783:                                              ; preds = %676, %1078
  %784 = phi i64 [ %1079, %1078 ], [ 0, %676 ]
  %785 = load ptr, ptr %151, align 8, !tbaa !28
  %786 = getelementptr inbounds nuw %struct.Piece, ptr %785, i64 %784
  %787 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %788 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %789 = getelementptr inbounds nuw i8, ptr %786, i64 7424
  %790 = load <8 x i64>, ptr %789, align 64, !tbaa !26
  %791 = fdiv <8 x double> %787, %788
  %792 = fdiv <8 x double> splat (double 1.000000e+00), %787
  %793 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %791, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %794 = fadd <8 x double> %791, splat (double 1.000000e+00)
  %795 = fdiv <8 x double> %793, %794
  %796 = fmul <8 x double> %792, %795
  %797 = icmp eq <8 x i64> %790, zeroinitializer
  %798 = select <8 x i1> %797, <8 x double> %796, <8 x double> %792
  %799 = fneg <8 x double> %792
  %800 = fneg <8 x double> %794
  %801 = fmul <8 x double> %792, %800
  %802 = select <8 x i1> %797, <8 x double> %801, <8 x double> %799
  %803 = fmul <8 x double> %791, %791
  %804 = fdiv <8 x double> %803, %794
  %805 = fmul <8 x double> %792, %804
  %806 = select <8 x i1> %797, <8 x double> %805, <8 x double> zeroinitializer
  %807 = getelementptr inbounds nuw i8, ptr %786, i64 5248
  %808 = load <8 x double>, ptr %807, align 64, !tbaa !26
  %809 = select <8 x i1> %702, <8 x double> %808, <8 x double> %798
  store <8 x double> %809, ptr %807, align 64, !tbaa !26
  %810 = getelementptr inbounds nuw i8, ptr %786, i64 5312
  %811 = load <8 x double>, ptr %810, align 64, !tbaa !26
  %812 = select <8 x i1> %702, <8 x double> %811, <8 x double> %802
  store <8 x double> %812, ptr %810, align 64, !tbaa !26
  %813 = getelementptr inbounds nuw i8, ptr %786, i64 5376
  %814 = load <8 x double>, ptr %813, align 64, !tbaa !26
  %815 = select <8 x i1> %702, <8 x double> %814, <8 x double> %806
  store <8 x double> %815, ptr %813, align 64, !tbaa !26
  %816 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %817 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %818 = fdiv <8 x double> %816, %817
  %819 = select <8 x i1> %797, <8 x double> %818, <8 x double> zeroinitializer
  %820 = getelementptr inbounds nuw i8, ptr %786, i64 2944
  %821 = getelementptr inbounds nuw i8, ptr %786, i64 3712
  %822 = getelementptr inbounds nuw i8, ptr %786, i64 4480
  br label %1082

823:                                              ; preds = %1082
  %824 = load <8 x double>, ptr %820, align 64, !tbaa !26
  %825 = load <8 x double>, ptr %821, align 64, !tbaa !26
  %826 = fcmp olt <8 x double> %824, %825
  %827 = select <8 x i1> %826, <8 x double> %824, <8 x double> %825
  %828 = load <8 x double>, ptr %786, align 64, !tbaa !26
  %829 = fmul <8 x double> %828, splat (double 3.000000e-01)
  %830 = fcmp ogt <8 x double> %827, %829
  %831 = select <8 x i1> %830, <8 x double> %827, <8 x double> %829
  %832 = select <8 x i1> %702, <8 x double> %824, <8 x double> %831
  store <8 x double> %832, ptr %820, align 64, !tbaa !26
  %833 = getelementptr inbounds nuw i8, ptr %786, i64 5632
  %834 = getelementptr inbounds nuw i8, ptr %786, i64 3456
  %835 = load <8 x double>, ptr %834, align 64, !tbaa !26
  %836 = fcmp ogt <8 x double> %835, zeroinitializer
  %837 = select <8 x i1> %836, <8 x double> %835, <8 x double> zeroinitializer
  %838 = load <8 x double>, ptr %833, align 64, !tbaa !26
  %839 = select <8 x i1> %702, <8 x double> %838, <8 x double> %837
  store <8 x double> %839, ptr %833, align 64, !tbaa !26
  %840 = getelementptr inbounds nuw i8, ptr %786, i64 384
  %841 = load <8 x double>, ptr %840, align 64, !tbaa !26
  %842 = getelementptr inbounds nuw i8, ptr %786, i64 448
  %843 = load <8 x double>, ptr %842, align 64, !tbaa !26
  %844 = getelementptr inbounds nuw i8, ptr %786, i64 512
  %845 = load <8 x double>, ptr %844, align 64, !tbaa !26
  %846 = getelementptr inbounds nuw i8, ptr %786, i64 640
  %847 = load <8 x double>, ptr %846, align 64, !tbaa !26
  %848 = getelementptr inbounds nuw i8, ptr %786, i64 768
  %849 = load <8 x double>, ptr %848, align 64, !tbaa !26
  %850 = getelementptr inbounds nuw i8, ptr %786, i64 832
  %851 = getelementptr inbounds nuw i8, ptr %786, i64 1536
  %852 = load <8 x double>, ptr %851, align 64, !tbaa !26
  %853 = getelementptr inbounds nuw i8, ptr %786, i64 4416
  %854 = load <8 x double>, ptr %853, align 64, !tbaa !26
  %855 = fsub <8 x double> %854, %852
  %856 = getelementptr inbounds nuw i8, ptr %786, i64 5184
  %857 = load <8 x double>, ptr %856, align 64, !tbaa !26
  %858 = fsub <8 x double> %857, %852
  %859 = load <8 x double>, ptr %810, align 64, !tbaa !26
  %860 = load <8 x double>, ptr %813, align 64, !tbaa !26
  %861 = fmul <8 x double> %855, %859
  %862 = fmul <8 x double> %858, %860
  %863 = fmul <8 x double> %852, %859
  %864 = fmul <8 x double> %847, %863
  %865 = fmul <8 x double> %852, %860
  %866 = fmul <8 x double> %847, %865
  %867 = getelementptr inbounds nuw i8, ptr %786, i64 7568
  %868 = load ptr, ptr %867, align 16, !tbaa !47
  %869 = getelementptr inbounds nuw i8, ptr %786, i64 7576
  %870 = load ptr, ptr %869, align 8, !tbaa !57
  %871 = getelementptr inbounds nuw i8, ptr %786, i64 7656
  %872 = load ptr, ptr %871, align 8, !tbaa !49
  %873 = getelementptr inbounds nuw i8, ptr %786, i64 7560
  %874 = load ptr, ptr %873, align 8, !tbaa !58
  %875 = getelementptr inbounds nuw i8, ptr %786, i64 7584
  %876 = load ptr, ptr %875, align 32, !tbaa !59
  %877 = load i64, ptr %141, align 16, !tbaa !21
  %878 = icmp sgt i64 %877, 0
  br i1 %878, label %879, label %881

879:                                              ; preds = %823
  %880 = getelementptr inbounds nuw i8, ptr %786, i64 7552
  br label %894

881:                                              ; preds = %925, %823
  %882 = fmul <8 x double> %849, %859
  %883 = fmul <8 x double> %849, %860
  %884 = getelementptr inbounds nuw i8, ptr %786, i64 7736
  %885 = load ptr, ptr %884, align 8, !tbaa !50
  %886 = getelementptr inbounds nuw i8, ptr %786, i64 7744
  %887 = load ptr, ptr %886, align 64, !tbaa !60
  %888 = load i64, ptr %142, align 8, !tbaa !22
  %889 = icmp sgt i64 %888, 0
  br i1 %889, label %890, label %959

890:                                              ; preds = %881
  %891 = getelementptr inbounds nuw i8, ptr %786, i64 7688
  %892 = getelementptr inbounds nuw i8, ptr %786, i64 7696
  %893 = getelementptr inbounds nuw i8, ptr %786, i64 7704
  br label %932

894:                                              ; preds = %879, %925
  %895 = phi i64 [ 0, %879 ], [ %929, %925 ]
  %896 = getelementptr inbounds nuw <8 x double>, ptr %868, i64 %895
  %897 = load <8 x double>, ptr %896, align 64, !tbaa !26
  %898 = getelementptr inbounds nuw <8 x double>, ptr %870, i64 %895
  %899 = load <8 x double>, ptr %898, align 64, !tbaa !26
  %900 = fsub <8 x double> %897, %899
  %901 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %819, <8 x double> %900, <8 x double> %897)
  %902 = getelementptr inbounds nuw <8 x double>, ptr %874, i64 %895
  %903 = load <8 x double>, ptr %902, align 64, !tbaa !26
  %904 = select <8 x i1> %702, <8 x double> %903, <8 x double> %901
  store <8 x double> %904, ptr %902, align 64, !tbaa !26
  %905 = load i64, ptr %880, align 64, !tbaa !31
  %906 = icmp slt i64 %895, %905
  %907 = getelementptr inbounds nuw <8 x double>, ptr %872, i64 %895
  %908 = load <8 x double>, ptr %907, align 64, !tbaa !26
  br i1 %906, label %909, label %912

909:                                              ; preds = %894
  %910 = fmul <8 x double> %866, %899
  %911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %864, <8 x double> %897, <8 x double> %910)
  br label %925

912:                                              ; preds = %894
  %913 = fmul <8 x double> %845, %897
  %914 = fmul <8 x double> %913, splat (double 0x3FD5555555555555)
  %915 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %843, <8 x double> splat (double 5.000000e-01), <8 x double> %914)
  %916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %897, <8 x double> %915, <8 x double> %841)
  %917 = fmul <8 x double> %897, %916
  %918 = fmul <8 x double> %845, %899
  %919 = fmul <8 x double> %918, splat (double 0x3FD5555555555555)
  %920 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %843, <8 x double> splat (double 5.000000e-01), <8 x double> %919)
  %921 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %899, <8 x double> %920, <8 x double> %841)
  %922 = fmul <8 x double> %899, %921
  %923 = fmul <8 x double> %862, %922
  %924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %861, <8 x double> %917, <8 x double> %923)
  br label %925

925:                                              ; preds = %912, %909
  %926 = phi <8 x double> [ %924, %912 ], [ %911, %909 ]
  %927 = fmul <8 x double> %926, %908
  %928 = getelementptr inbounds nuw <8 x double>, ptr %876, i64 %895
  store <8 x double> %927, ptr %928, align 64, !tbaa !26
  %929 = add nuw nsw i64 %895, 1
  %930 = load i64, ptr %141, align 16, !tbaa !21
  %931 = icmp slt i64 %929, %930
  br i1 %931, label %894, label %881, !llvm.loop !61

932:                                              ; preds = %890, %932
  %933 = phi i64 [ 0, %890 ], [ %934, %932 ]
  %934 = add nuw nsw i64 %933, 1
  %935 = getelementptr inbounds nuw <8 x double>, ptr %885, i64 %934
  %936 = load <8 x double>, ptr %935, align 64, !tbaa !26
  %937 = getelementptr inbounds nuw <8 x double>, ptr %885, i64 %933
  %938 = load <8 x double>, ptr %937, align 64, !tbaa !26
  %939 = fsub <8 x double> %936, %938
  %940 = load ptr, ptr %891, align 8, !tbaa !51
  %941 = getelementptr inbounds nuw <8 x double>, ptr %940, i64 %933
  %942 = load <8 x double>, ptr %941, align 64, !tbaa !26
  %943 = fmul <8 x double> %939, %942
  %944 = getelementptr inbounds nuw <8 x double>, ptr %887, i64 %934
  %945 = load <8 x double>, ptr %944, align 64, !tbaa !26
  %946 = getelementptr inbounds nuw <8 x double>, ptr %887, i64 %933
  %947 = load <8 x double>, ptr %946, align 64, !tbaa !26
  %948 = fsub <8 x double> %945, %947
  %949 = load ptr, ptr %892, align 16, !tbaa !62
  %950 = getelementptr inbounds nuw <8 x double>, ptr %949, i64 %933
  %951 = load <8 x double>, ptr %950, align 64, !tbaa !26
  %952 = fmul <8 x double> %948, %951
  %953 = fmul <8 x double> %883, %952
  %954 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %882, <8 x double> %943, <8 x double> %953)
  %955 = load ptr, ptr %893, align 8, !tbaa !63
  %956 = getelementptr inbounds nuw <8 x double>, ptr %955, i64 %933
  store <8 x double> %954, ptr %956, align 64, !tbaa !26
  %957 = load i64, ptr %142, align 8, !tbaa !22
  %958 = icmp slt i64 %934, %957
  br i1 %958, label %932, label %959, !llvm.loop !64

959:                                              ; preds = %932, %881
  %960 = getelementptr inbounds nuw i8, ptr %786, i64 1664
  %961 = load <8 x double>, ptr %960, align 64, !tbaa !26
  %962 = fcmp ogt <8 x double> %961, zeroinitializer
  %963 = bitcast <8 x i1> %962 to i8
  %964 = icmp eq i8 %963, 0
  br i1 %964, label %965, label %969

965:                                              ; preds = %959
  %966 = getelementptr inbounds nuw i8, ptr %786, i64 7168
  %967 = load <8 x double>, ptr %966, align 64, !tbaa !26
  %968 = select <8 x i1> %702, <8 x double> %967, <8 x double> zeroinitializer
  store <8 x double> %968, ptr %966, align 64, !tbaa !26
  br label %1078

969:                                              ; preds = %959
  %970 = load <8 x double>, ptr %851, align 64, !tbaa !26
  %971 = getelementptr inbounds nuw i8, ptr %786, i64 1728
  %972 = load <8 x double>, ptr %971, align 64, !tbaa !26
  %973 = getelementptr inbounds nuw i8, ptr %786, i64 1856
  %974 = load <8 x double>, ptr %973, align 64, !tbaa !26
  %975 = load <8 x double>, ptr %182, align 64, !tbaa !26
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
  %1006 = load <8 x double>, ptr %853, align 64, !tbaa !26
  %1007 = fsub <8 x double> %1006, %970
  %1008 = load ptr, ptr %873, align 8, !tbaa !58
  %1009 = load ptr, ptr %867, align 16, !tbaa !47
  %1010 = getelementptr inbounds nuw i8, ptr %786, i64 7600
  %1011 = load ptr, ptr %1010, align 16, !tbaa !48
  %1012 = load ptr, ptr %871, align 8, !tbaa !49
  %1013 = getelementptr inbounds nuw i8, ptr %786, i64 7592
  %1014 = load ptr, ptr %1013, align 8, !tbaa !65
  %1015 = getelementptr inbounds nuw i8, ptr %786, i64 7552
  %1016 = load i64, ptr %1015, align 64, !tbaa !31
  %1017 = load i64, ptr %141, align 16, !tbaa !21
  %1018 = icmp slt i64 %1016, %1017
  br i1 %1018, label %1019, label %1023

1019:                                             ; preds = %969
  %1020 = getelementptr inbounds nuw i8, ptr %786, i64 1792
  %1021 = load <8 x double>, ptr %1020, align 64, !tbaa !26
  %1022 = fneg <8 x double> %1021
  br label %1035

1023:                                             ; preds = %1035, %969
  %1024 = phi <8 x double> [ zeroinitializer, %969 ], [ %1066, %1035 ]
  %1025 = phi <8 x double> [ zeroinitializer, %969 ], [ %1074, %1035 ]
  %1026 = getelementptr inbounds nuw i8, ptr %786, i64 3776
  %1027 = load <8 x double>, ptr %1026, align 64, !tbaa !26
  %1028 = fsub <8 x double> %1027, %1006
  %1029 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1024, <8 x double> %1028, <8 x double> %1025)
  %1030 = getelementptr inbounds nuw i8, ptr %786, i64 7168
  %1031 = load <8 x double>, ptr %850, align 64, !tbaa !26
  %1032 = fmul <8 x double> %1031, %1029
  %1033 = load <8 x double>, ptr %1030, align 64, !tbaa !26
  %1034 = select <8 x i1> %702, <8 x double> %1033, <8 x double> %1032
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
  %1070 = select <8 x i1> %702, <8 x double> %1069, <8 x double> %1067
  store <8 x double> %1070, ptr %1068, align 64, !tbaa !26
  %1071 = getelementptr inbounds <8 x double>, ptr %1012, i64 %1037
  %1072 = load <8 x double>, ptr %1071, align 64, !tbaa !26
  %1073 = fmul <8 x double> %1007, %1072
  %1074 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1066, <8 x double> %1073, <8 x double> %1036)
  %1075 = add nsw i64 %1037, 1
  %1076 = load i64, ptr %141, align 16, !tbaa !21
  %1077 = icmp slt i64 %1075, %1076
  br i1 %1077, label %1035, label %1023, !llvm.loop !66

1078:                                             ; preds = %965, %1023
  %1079 = add nuw nsw i64 %784, 1
  %1080 = load i64, ptr %178, align 8, !tbaa !20
  %1081 = icmp slt i64 %1079, %1080
  br i1 %1081, label %783, label %1095, !llvm.loop !67

1082:                                             ; preds = %783, %1082
  %1083 = phi i64 [ 0, %783 ], [ %1093, %1082 ]
  %1084 = getelementptr inbounds nuw [12 x <8 x double>], ptr %820, i64 0, i64 %1083
  %1085 = getelementptr inbounds nuw [12 x <8 x double>], ptr %821, i64 0, i64 %1083
  %1086 = load <8 x double>, ptr %1085, align 64, !tbaa !26
  %1087 = getelementptr inbounds nuw [12 x <8 x double>], ptr %822, i64 0, i64 %1083
  %1088 = load <8 x double>, ptr %1087, align 64, !tbaa !26
  %1089 = fsub <8 x double> %1086, %1088
  %1090 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %819, <8 x double> %1089, <8 x double> %1086)
  %1091 = load <8 x double>, ptr %1084, align 64, !tbaa !26
  %1092 = select <8 x i1> %702, <8 x double> %1091, <8 x double> %1090
  store <8 x double> %1092, ptr %1084, align 64, !tbaa !26
  %1093 = add nuw nsw i64 %1083, 1
  %1094 = icmp eq i64 %1093, 11
  br i1 %1094, label %823, label %1082, !llvm.loop !68

1095:                                             ; preds = %1078, %676
  %1096 = phi i64 [ %781, %676 ], [ %1080, %1078 ]
  %1097 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %1098 = fcmp ogt <8 x double> %1097, zeroinitializer
  %1099 = select <8 x i1> %1098, <8 x i64> %560, <8 x i64> zeroinitializer
  %1100 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1099)
  %1101 = icmp eq i64 %1100, 0
  br i1 %1101, label %1185, label %1102

1102:                                             ; preds = %1095
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1099, ptr %7, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1103 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %1104 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %1105 = fadd <8 x double> %1103, %1104
  store <8 x double> %1105, ptr %9, align 64, !tbaa !26
  %1106 = load ptr, ptr %189, align 8
  %1107 = load ptr, ptr %191, align 8
  %1108 = load ptr, ptr %192, align 8
  br label %1109

1109:                                             ; preds = %1177, %1102
  %1110 = phi i64 [ 0, %1102 ], [ %1178, %1177 ]
  %1111 = getelementptr inbounds nuw i64, ptr %7, i64 %1110
  %1112 = load i64, ptr %1111, align 8, !tbaa !30
  %1113 = icmp eq i64 %1112, 0
  br i1 %1113, label %1177, label %1114

1114:                                             ; preds = %1109
  %1115 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %1110
  %1116 = load i64, ptr %1115, align 8, !tbaa !30
  %1117 = shl nsw i64 %1116, 1
  %1118 = getelementptr inbounds i64, ptr %1106, i64 %1117
  %1119 = load i64, ptr %1118, align 8, !tbaa !30
  %1120 = shl nuw nsw i64 %1110, 1
  %1121 = getelementptr inbounds nuw [16 x i64], ptr %190, i64 0, i64 %1120
  %1122 = getelementptr inbounds i64, ptr %1108, i64 %1117
  %1123 = load i64, ptr %1122, align 8, !tbaa !30
  %1124 = shl nsw i64 %1123, 4
  %1125 = getelementptr inbounds i8, ptr %1107, i64 %1124
  %1126 = getelementptr inbounds nuw double, ptr %9, i64 %1110
  %1127 = load double, ptr %1126, align 8, !tbaa !43
  %1128 = load i64, ptr %1121, align 8, !tbaa !30
  %1129 = getelementptr i8, ptr %1125, i64 -16
  %1130 = icmp sgt i64 %1128, 0
  br i1 %1130, label %1131, label %1140

1131:                                             ; preds = %1114, %1137
  %1132 = phi i64 [ %1138, %1137 ], [ %1128, %1114 ]
  %1133 = shl i64 %1132, 4
  %1134 = getelementptr i8, ptr %1129, i64 %1133
  %1135 = load double, ptr %1134, align 8, !tbaa !43
  %1136 = fcmp ugt double %1127, %1135
  br i1 %1136, label %1140, label %1137

1137:                                             ; preds = %1131
  %1138 = add nsw i64 %1132, -1
  store i64 %1138, ptr %1121, align 8, !tbaa !30
  %1139 = icmp sgt i64 %1132, 1
  br i1 %1139, label %1131, label %1140, !llvm.loop !69

1140:                                             ; preds = %1137, %1131, %1114
  %1141 = phi i64 [ %1128, %1114 ], [ 0, %1137 ], [ %1132, %1131 ]
  %1142 = icmp slt i64 %1141, %1119
  br i1 %1142, label %1143, label %1152

1143:                                             ; preds = %1140, %1149
  %1144 = phi i64 [ %1150, %1149 ], [ %1141, %1140 ]
  %1145 = shl nsw i64 %1144, 4
  %1146 = getelementptr inbounds i8, ptr %1125, i64 %1145
  %1147 = load double, ptr %1146, align 8, !tbaa !43
  %1148 = fcmp ule double %1127, %1147
  br i1 %1148, label %1157, label %1149

1149:                                             ; preds = %1143
  %1150 = add i64 %1144, 1
  store i64 %1150, ptr %1121, align 8, !tbaa !30
  %1151 = icmp eq i64 %1150, %1119
  br i1 %1151, label %1152, label %1143, !llvm.loop !70

1152:                                             ; preds = %1149, %1140
  %1153 = shl i64 %1119, 4
  %1154 = getelementptr i8, ptr %1125, i64 %1153
  %1155 = getelementptr i8, ptr %1154, i64 -8
  %1156 = load double, ptr %1155, align 8, !tbaa !43
  br label %1174

1157:                                             ; preds = %1143
  %1158 = shl nsw i64 %1144, 1
  %1159 = or disjoint i64 %1158, 1
  %1160 = getelementptr inbounds double, ptr %1125, i64 %1159
  %1161 = load double, ptr %1160, align 8, !tbaa !43
  %1162 = icmp sgt i64 %1144, 0
  br i1 %1162, label %1163, label %1174

1163:                                             ; preds = %1157
  %1164 = getelementptr inbounds nuw i8, ptr %1125, i64 %1145
  %1165 = getelementptr i8, ptr %1164, i64 -8
  %1166 = load double, ptr %1165, align 8, !tbaa !43
  %1167 = getelementptr i8, ptr %1164, i64 -16
  %1168 = load double, ptr %1167, align 8, !tbaa !43
  %1169 = fsub double %1127, %1168
  %1170 = fsub double %1147, %1168
  %1171 = fdiv double %1169, %1170
  %1172 = fsub double %1161, %1166
  %1173 = tail call double @llvm.fmuladd.f64(double %1171, double %1172, double %1166)
  br label %1174

1174:                                             ; preds = %1163, %1157, %1152
  %1175 = phi double [ %1173, %1163 ], [ %1161, %1157 ], [ %1156, %1152 ]
  %1176 = getelementptr inbounds nuw double, ptr %8, i64 %1110
  store double %1175, ptr %1176, align 8, !tbaa !43
  br label %1177

1177:                                             ; preds = %1174, %1109
  %1178 = add nuw nsw i64 %1110, 1
  %1179 = icmp eq i64 %1178, 8
  br i1 %1179, label %1180, label %1109, !llvm.loop !71

1180:                                             ; preds = %1177
  %1181 = load <8 x double>, ptr %8, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1182 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %1183 = icmp eq <8 x i64> %1099, zeroinitializer
  %1184 = select <8 x i1> %1183, <8 x double> %1182, <8 x double> %1181
  store <8 x double> %1184, ptr %187, align 64, !tbaa !26
  br label %1185

1185:                                             ; preds = %1095, %1180, %558
  %1186 = phi i64 [ %1096, %1095 ], [ %1096, %1180 ], [ %563, %558 ]
  %1187 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %1188 = icmp eq <8 x i64> %560, zeroinitializer
  %1189 = select <8 x i1> %1188, <8 x double> %1187, <8 x double> zeroinitializer
  store <8 x double> %1189, ptr %193, align 64, !tbaa !26
  %1190 = icmp sgt i64 %1186, 0
  br i1 %1190, label %1196, label %1191

1191:                                             ; preds = %1185
  %1192 = load <8 x double>, ptr %197, align 64, !tbaa !26
  br label %1903

1193:                                             ; preds = %1895
  %1194 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %1195 = icmp sgt i64 %1899, 0
  br i1 %1195, label %1909, label %1903

1196:                                             ; preds = %1185, %1895
  %1197 = phi i64 [ %1898, %1895 ], [ 0, %1185 ]
  %1198 = load ptr, ptr %151, align 8, !tbaa !28
  %1199 = getelementptr inbounds nuw %struct.Piece, ptr %1198, i64 %1197
  %1200 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %1201 = getelementptr inbounds nuw i8, ptr %1199, i64 6400
  %1202 = load <8 x double>, ptr %1201, align 64, !tbaa !26
  %1203 = fsub <8 x double> %1200, %1202
  %1204 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1203)
  %1205 = getelementptr inbounds nuw i8, ptr %1199, i64 2176
  %1206 = load <8 x double>, ptr %1205, align 64, !tbaa !26
  %1207 = fcmp ogt <8 x double> %1206, splat (double 1.000000e-09)
  %1208 = select <8 x i1> %1207, <8 x double> %1206, <8 x double> splat (double 1.000000e-09)
  %1209 = fdiv <8 x double> %1204, %1208
  %1210 = getelementptr inbounds nuw i8, ptr %1199, i64 1024
  %1211 = load <8 x double>, ptr %1210, align 64, !tbaa !26
  %1212 = fcmp ule <8 x double> %1206, zeroinitializer
  %1213 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1209)
  %1214 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1213)
  %1215 = select <8 x i1> %1212, <8 x double> splat (double 1.000000e+00), <8 x double> %1214
  %1216 = fmul <8 x double> %1211, %1215
  %1217 = getelementptr inbounds nuw i8, ptr %1199, i64 1088
  %1218 = load <8 x double>, ptr %1217, align 64, !tbaa !26
  %1219 = getelementptr inbounds nuw i8, ptr %1199, i64 5632
  %1220 = load <8 x double>, ptr %1219, align 64, !tbaa !26
  %1221 = getelementptr inbounds nuw i8, ptr %1199, i64 5696
  %1222 = load <8 x double>, ptr %1221, align 64, !tbaa !26
  %1223 = fadd <8 x double> %1220, %1222
  %1224 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1218, <8 x double> %1223, <8 x double> %1216)
  %1225 = getelementptr inbounds nuw i8, ptr %1199, i64 1152
  %1226 = load <8 x double>, ptr %1225, align 64, !tbaa !26
  %1227 = fcmp olt <8 x double> %1224, %1226
  %1228 = select <8 x i1> %1227, <8 x double> %1224, <8 x double> %1226
  %1229 = getelementptr inbounds nuw i8, ptr %1199, i64 5312
  %1230 = load <8 x double>, ptr %1229, align 64, !tbaa !26
  %1231 = getelementptr inbounds nuw i8, ptr %1199, i64 3968
  %1232 = load <8 x double>, ptr %1231, align 64, !tbaa !26
  %1233 = getelementptr inbounds nuw i8, ptr %1199, i64 5376
  %1234 = load <8 x double>, ptr %1233, align 64, !tbaa !26
  %1235 = getelementptr inbounds nuw i8, ptr %1199, i64 4736
  %1236 = load <8 x double>, ptr %1235, align 64, !tbaa !26
  %1237 = fmul <8 x double> %1234, %1236
  %1238 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1230, <8 x double> %1232, <8 x double> %1237)
  %1239 = getelementptr inbounds nuw i8, ptr %1199, i64 1216
  %1240 = load <8 x double>, ptr %1239, align 64, !tbaa !26
  %1241 = fneg <8 x double> %1240
  %1242 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1241, <8 x double> %1238, <8 x double> %1228)
  %1243 = getelementptr inbounds nuw i8, ptr %1199, i64 5248
  %1244 = load <8 x double>, ptr %1243, align 64, !tbaa !26
  %1245 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1244, <8 x double> splat (double 1.000000e+00))
  %1246 = fdiv <8 x double> %1242, %1245
  %1247 = getelementptr inbounds nuw i8, ptr %1199, i64 7488
  %1248 = load <8 x i64>, ptr %1247, align 64, !tbaa !26
  %1249 = load <8 x double>, ptr %194, align 64, !tbaa !26
  %1250 = icmp eq <8 x i64> %1248, zeroinitializer
  %1251 = select <8 x i1> %1250, <8 x double> %1200, <8 x double> %1249
  %1252 = getelementptr inbounds nuw i8, ptr %1199, i64 5504
  store <8 x double> %1251, ptr %1252, align 64, !tbaa !26
  %1253 = load <8 x double>, ptr %195, align 64, !tbaa !26
  %1254 = select <8 x i1> %1250, <8 x double> %1246, <8 x double> %1253
  %1255 = getelementptr inbounds nuw i8, ptr %1199, i64 3200
  store <8 x double> %1254, ptr %1255, align 64, !tbaa !26
  %1256 = getelementptr inbounds nuw i8, ptr %1199, i64 896
  %1257 = load <8 x double>, ptr %1256, align 64, !tbaa !26
  %1258 = fcmp ule <8 x double> %1257, zeroinitializer
  %1259 = getelementptr inbounds nuw i8, ptr %1199, i64 2944
  %1260 = getelementptr inbounds nuw i8, ptr %1199, i64 3072
  %1261 = load <8 x double>, ptr %1260, align 64, !tbaa !26
  %1262 = fcmp ogt <8 x double> %1257, splat (double 1.000000e-30)
  %1263 = select <8 x i1> %1262, <8 x double> %1257, <8 x double> splat (double 1.000000e-30)
  %1264 = fdiv <8 x double> %1261, %1263
  %1265 = fcmp ogt <8 x double> %1264, zeroinitializer
  %1266 = select <8 x i1> %1265, <8 x double> %1264, <8 x double> zeroinitializer
  %1267 = fcmp olt <8 x double> %1266, splat (double 1.000000e+00)
  %1268 = select <8 x i1> %1267, <8 x double> %1266, <8 x double> splat (double 1.000000e+00)
  %1269 = select <8 x i1> %1258, <8 x double> zeroinitializer, <8 x double> %1268
  %1270 = getelementptr inbounds nuw i8, ptr %1199, i64 2112
  %1271 = load <8 x double>, ptr %1270, align 64, !tbaa !26
  %1272 = fmul <8 x double> %1269, splat (double 4.180000e+03)
  %1273 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1272, <8 x double> %1257, <8 x double> %1271)
  %1274 = getelementptr inbounds nuw i8, ptr %1199, i64 4288
  %1275 = load <8 x double>, ptr %1274, align 64, !tbaa !26
  %1276 = getelementptr inbounds nuw i8, ptr %1199, i64 5056
  %1277 = load <8 x double>, ptr %1276, align 64, !tbaa !26
  %1278 = fmul <8 x double> %1234, %1277
  %1279 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1230, <8 x double> %1275, <8 x double> %1278)
  %1280 = getelementptr inbounds nuw i8, ptr %1199, i64 7360
  %1281 = load <8 x i64>, ptr %1280, align 64, !tbaa !26
  %1282 = fcmp ule <8 x double> %1271, zeroinitializer
  %1283 = getelementptr inbounds nuw i8, ptr %1199, i64 6912
  store <8 x double> %1269, ptr %1283, align 64, !tbaa !26
  %1284 = fmul <8 x double> %1244, %1273
  %1285 = icmp eq <8 x i64> %1281, splat (i64 -1)
  %1286 = select <8 x i1> %1282, <8 x i1> splat (i1 true), <8 x i1> %1285
  %1287 = select <8 x i1> %1286, <8 x double> zeroinitializer, <8 x double> %1284
  %1288 = getelementptr inbounds nuw i8, ptr %1199, i64 6976
  store <8 x double> %1287, ptr %1288, align 64, !tbaa !26
  %1289 = fmul <8 x double> %1279, %1273
  %1290 = select <8 x i1> %1286, <8 x double> zeroinitializer, <8 x double> %1289
  %1291 = getelementptr inbounds nuw i8, ptr %1199, i64 7040
  store <8 x double> %1290, ptr %1291, align 64, !tbaa !26
  %1292 = load <8 x double>, ptr %1199, align 64, !tbaa !26
  %1293 = load <8 x double>, ptr %1259, align 64, !tbaa !26
  %1294 = fsub <8 x double> %1292, %1293
  %1295 = fsub <8 x double> splat (double 1.000000e+00), %1269
  %1296 = getelementptr inbounds nuw i8, ptr %1199, i64 1920
  %1297 = load <8 x double>, ptr %1296, align 64, !tbaa !26
  %1298 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1295, <8 x double> %1297, <8 x double> %1294)
  %1299 = load <8 x double>, ptr %196, align 64, !tbaa !26
  %1300 = fdiv <8 x double> splat (double 1.000000e+00), %1299
  %1301 = getelementptr inbounds nuw i8, ptr %1199, i64 2240
  %1302 = load <8 x double>, ptr %1301, align 64, !tbaa !26
  %1303 = fcmp ogt <8 x double> %1302, splat (double 1.000000e-30)
  %1304 = select <8 x i1> %1303, <8 x double> %1302, <8 x double> splat (double 1.000000e-30)
  %1305 = fdiv <8 x double> %1298, %1304
  %1306 = fadd <8 x double> %1300, %1305
  %1307 = getelementptr inbounds nuw i8, ptr %1199, i64 7104
  store <8 x double> %1306, ptr %1307, align 64, !tbaa !26
  %1308 = getelementptr inbounds nuw i8, ptr %1199, i64 6784
  store <8 x double> %1220, ptr %1308, align 64, !tbaa !26
  %1309 = getelementptr inbounds nuw i8, ptr %1199, i64 2560
  %1310 = load <8 x double>, ptr %1309, align 64, !tbaa !26
  %1311 = getelementptr inbounds nuw i8, ptr %1199, i64 2624
  %1312 = load <8 x double>, ptr %1311, align 64, !tbaa !26
  %1313 = getelementptr inbounds nuw i8, ptr %1199, i64 2688
  %1314 = load <8 x double>, ptr %1313, align 64, !tbaa !26
  %1315 = getelementptr inbounds nuw i8, ptr %1199, i64 2752
  %1316 = load <8 x double>, ptr %1315, align 64, !tbaa !26
  %1317 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1316, <8 x double> %1314)
  %1318 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1317, <8 x double> %1312)
  %1319 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1318, <8 x double> %1310)
  %1320 = getelementptr inbounds nuw i8, ptr %1199, i64 3648
  store <8 x double> %1319, ptr %1320, align 64, !tbaa !26
  %1321 = getelementptr inbounds nuw i8, ptr %1199, i64 4416
  %1322 = load <8 x double>, ptr %1321, align 64, !tbaa !26
  %1323 = fmul <8 x double> %1230, %1322
  %1324 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1244, <8 x double> %1319, <8 x double> %1323)
  %1325 = getelementptr inbounds nuw i8, ptr %1199, i64 5184
  %1326 = load <8 x double>, ptr %1325, align 64, !tbaa !26
  %1327 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1234, <8 x double> %1326, <8 x double> %1324)
  %1328 = fmul <8 x double> %1327, splat (double 5.000000e-01)
  %1329 = getelementptr inbounds nuw i8, ptr %1199, i64 6720
  store <8 x double> %1328, ptr %1329, align 64, !tbaa !26
  %1330 = getelementptr inbounds nuw i8, ptr %1199, i64 2304
  %1331 = load <8 x double>, ptr %1330, align 64, !tbaa !26
  %1332 = getelementptr inbounds nuw i8, ptr %1199, i64 2368
  %1333 = load <8 x double>, ptr %1332, align 64, !tbaa !26
  %1334 = getelementptr inbounds nuw i8, ptr %1199, i64 2432
  %1335 = load <8 x double>, ptr %1334, align 64, !tbaa !26
  %1336 = getelementptr inbounds nuw i8, ptr %1199, i64 2496
  %1337 = load <8 x double>, ptr %1336, align 64, !tbaa !26
  %1338 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1337, <8 x double> %1335)
  %1339 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1338, <8 x double> %1333)
  %1340 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1339, <8 x double> %1331)
  %1341 = getelementptr inbounds nuw i8, ptr %1199, i64 6656
  store <8 x double> %1340, ptr %1341, align 64, !tbaa !26
  %1342 = getelementptr inbounds nuw i8, ptr %1199, i64 7552
  %1343 = load i64, ptr %1342, align 64, !tbaa !31
  %1344 = icmp eq i64 %1343, 0
  br i1 %1344, label %1345, label %1357

1345:                                             ; preds = %1196
  %1346 = fdiv <8 x double> %1340, %1293
  %1347 = load i64, ptr %141, align 16, !tbaa !21
  %1348 = getelementptr inbounds nuw i8, ptr %1199, i64 7672
  %1349 = load ptr, ptr %1348, align 8, !tbaa !35
  %1350 = getelementptr inbounds <8 x double>, ptr %1349, i64 %1347
  %1351 = load <8 x double>, ptr %1350, align 64, !tbaa !26
  %1352 = fmul <8 x double> %1346, %1351
  %1353 = getelementptr inbounds nuw i8, ptr %1199, i64 64
  %1354 = load <8 x double>, ptr %1353, align 64, !tbaa !26
  %1355 = fsub <8 x double> %1293, %1354
  %1356 = fdiv <8 x double> splat (double 1.000000e+00), %1355
  br label %1380

1357:                                             ; preds = %1196
  %1358 = getelementptr inbounds nuw i8, ptr %1199, i64 64
  %1359 = load <8 x double>, ptr %1358, align 64, !tbaa !26
  %1360 = fsub <8 x double> %1293, %1359
  %1361 = fdiv <8 x double> splat (double 1.000000e+00), %1360
  %1362 = load i64, ptr %141, align 16, !tbaa !21
  %1363 = getelementptr inbounds nuw i8, ptr %1199, i64 7672
  %1364 = load ptr, ptr %1363, align 8, !tbaa !35
  %1365 = shl nsw i64 %1362, 8
  %1366 = getelementptr inbounds i8, ptr %1364, i64 %1365
  %1367 = load <8 x double>, ptr %1366, align 64, !tbaa !26
  %1368 = getelementptr inbounds nuw i8, ptr %1366, i64 64
  %1369 = load <8 x double>, ptr %1368, align 64, !tbaa !26
  %1370 = getelementptr inbounds nuw i8, ptr %1366, i64 128
  %1371 = load <8 x double>, ptr %1370, align 64, !tbaa !26
  %1372 = getelementptr inbounds nuw i8, ptr %1366, i64 192
  %1373 = load <8 x double>, ptr %1372, align 64, !tbaa !26
  %1374 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1373, <8 x double> %1371)
  %1375 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1374, <8 x double> %1369)
  %1376 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1375, <8 x double> %1367)
  %1377 = icmp sgt i64 %1362, %1343
  %1378 = fmul <8 x double> %1361, %1376
  %1379 = select i1 %1377, <8 x double> %1378, <8 x double> %1376
  br label %1380

1380:                                             ; preds = %1345, %1357
  %1381 = phi <8 x double> [ %1356, %1345 ], [ %1361, %1357 ]
  %1382 = phi <8 x double> [ %1355, %1345 ], [ %1360, %1357 ]
  %1383 = phi <8 x double> [ %1352, %1345 ], [ %1379, %1357 ]
  %1384 = getelementptr inbounds nuw i8, ptr %1199, i64 5568
  %1385 = load <8 x double>, ptr %1384, align 64, !tbaa !26
  %1386 = fcmp ogt <8 x double> %1294, splat (double 0x3D719799812DEA11)
  %1387 = select <8 x i1> %1386, <8 x double> %1294, <8 x double> splat (double 0x3D719799812DEA11)
  %1388 = getelementptr inbounds nuw i8, ptr %1199, i64 6528
  store <8 x double> %1381, ptr %1388, align 64, !tbaa !26
  %1389 = getelementptr inbounds nuw i8, ptr %1199, i64 704
  %1390 = load <8 x double>, ptr %1389, align 64, !tbaa !26
  %1391 = fdiv <8 x double> %1390, %1387
  %1392 = getelementptr inbounds nuw i8, ptr %1199, i64 6592
  store <8 x double> %1391, ptr %1392, align 64, !tbaa !26
  %1393 = getelementptr inbounds nuw i8, ptr %1199, i64 7560
  %1394 = load ptr, ptr %1393, align 8, !tbaa !58
  %1395 = load i64, ptr %141, align 16, !tbaa !21
  %1396 = getelementptr <8 x double>, ptr %1394, i64 %1395
  %1397 = getelementptr i8, ptr %1396, i64 -64
  %1398 = load <8 x double>, ptr %1397, align 64, !tbaa !26
  %1399 = fadd <8 x double> %1385, %1398
  %1400 = fmul <8 x double> %1399, splat (double 5.000000e-01)
  %1401 = getelementptr inbounds nuw i8, ptr %1199, i64 192
  %1402 = load <8 x double>, ptr %1401, align 64, !tbaa !26
  %1403 = getelementptr inbounds nuw i8, ptr %1199, i64 256
  %1404 = load <8 x double>, ptr %1403, align 64, !tbaa !26
  %1405 = getelementptr inbounds nuw i8, ptr %1199, i64 320
  %1406 = load <8 x double>, ptr %1405, align 64, !tbaa !26
  %1407 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1400, <8 x double> %1406, <8 x double> %1404)
  %1408 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1400, <8 x double> %1407, <8 x double> %1402)
  %1409 = fmul <8 x double> %1383, %1408
  %1410 = fmul <8 x double> %1269, %1409
  %1411 = getelementptr inbounds nuw i8, ptr %1199, i64 2048
  %1412 = load <8 x double>, ptr %1411, align 64, !tbaa !26
  %1413 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1410, <8 x double> %1412, <8 x double> splat (double 1.000000e+00))
  %1414 = fdiv <8 x double> splat (double 1.000000e+00), %1413
  %1415 = icmp eq <8 x i64> %1281, zeroinitializer
  %1416 = select <8 x i1> %1415, <8 x double> %1414, <8 x double> splat (double 1.000000e+00)
  %1417 = getelementptr inbounds nuw i8, ptr %1199, i64 6848
  store <8 x double> %1416, ptr %1417, align 64, !tbaa !26
  %1418 = fmul <8 x double> %1409, %1416
  %1419 = getelementptr inbounds nuw i8, ptr %1199, i64 6016
  store <8 x double> %1418, ptr %1419, align 64, !tbaa !26
  %1420 = fmul <8 x double> %1328, splat (double 2.000000e+00)
  %1421 = getelementptr inbounds nuw i8, ptr %1199, i64 384
  %1422 = load <8 x double>, ptr %1421, align 64, !tbaa !26
  %1423 = getelementptr inbounds nuw i8, ptr %1199, i64 448
  %1424 = load <8 x double>, ptr %1423, align 64, !tbaa !26
  %1425 = getelementptr inbounds nuw i8, ptr %1199, i64 512
  %1426 = load <8 x double>, ptr %1425, align 64, !tbaa !26
  %1427 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1385, <8 x double> %1426, <8 x double> %1424)
  %1428 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1385, <8 x double> %1427, <8 x double> %1422)
  %1429 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1420, <8 x double> %1428, <8 x double> %1418)
  %1430 = getelementptr inbounds nuw i8, ptr %1199, i64 6144
  store <8 x double> %1429, ptr %1430, align 64, !tbaa !26
  %1431 = fmul <8 x double> %1254, %1295
  %1432 = getelementptr inbounds nuw i8, ptr %1199, i64 1984
  %1433 = load <8 x double>, ptr %1432, align 64, !tbaa !26
  %1434 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1431, <8 x double> %1433, <8 x double> splat (double 1.000000e+00))
  %1435 = fdiv <8 x double> %1254, %1434
  %1436 = load i64, ptr %142, align 8, !tbaa !22
  %1437 = sitofp i64 %1436 to double
  %1438 = fmul double %1437, 2.000000e+00
  %1439 = insertelement <8 x double> poison, double %1438, i64 0
  %1440 = shufflevector <8 x double> %1439, <8 x double> poison, <8 x i32> zeroinitializer
  %1441 = fmul <8 x double> %1391, %1440
  %1442 = fadd <8 x double> %1435, %1441
  %1443 = fdiv <8 x double> %1435, %1442
  %1444 = fmul <8 x double> %1340, %1441
  %1445 = select <8 x i1> %1415, <8 x double> %1435, <8 x double> %1444
  %1446 = getelementptr inbounds nuw i8, ptr %1199, i64 6080
  store <8 x double> %1445, ptr %1446, align 64, !tbaa !26
  %1447 = fmul <8 x double> %1441, %1443
  %1448 = select <8 x i1> %1415, <8 x double> %1435, <8 x double> %1447
  %1449 = getelementptr inbounds nuw i8, ptr %1199, i64 6208
  store <8 x double> %1448, ptr %1449, align 64, !tbaa !26
  %1450 = select <8 x i1> %1415, <8 x double> splat (double 1.000000e+00), <8 x double> %1443
  %1451 = getelementptr inbounds nuw i8, ptr %1199, i64 6272
  store <8 x double> %1450, ptr %1451, align 64, !tbaa !26
  br i1 %1344, label %1613, label %1452

1452:                                             ; preds = %1380
  %1453 = getelementptr inbounds nuw i8, ptr %1199, i64 576
  %1454 = load <8 x double>, ptr %1453, align 64, !tbaa !26
  %1455 = getelementptr inbounds nuw i8, ptr %1199, i64 640
  %1456 = load <8 x double>, ptr %1455, align 64, !tbaa !26
  %1457 = getelementptr inbounds nuw i8, ptr %1199, i64 1536
  %1458 = load <8 x double>, ptr %1457, align 64, !tbaa !26
  %1459 = load i64, ptr %141, align 16, !tbaa !21
  %1460 = fsub <8 x double> %1319, %1458
  %1461 = fmul <8 x double> %1424, splat (double 5.000000e-01)
  %1462 = fmul <8 x double> %1426, splat (double 0x3FE5555555555555)
  %1463 = getelementptr inbounds nuw i8, ptr %1199, i64 7648
  %1464 = load ptr, ptr %1463, align 32, !tbaa !72
  %1465 = getelementptr inbounds nuw i8, ptr %1199, i64 7656
  %1466 = load ptr, ptr %1465, align 8, !tbaa !49
  %1467 = getelementptr inbounds nuw i8, ptr %1199, i64 7584
  %1468 = load ptr, ptr %1467, align 32, !tbaa !59
  %1469 = getelementptr inbounds nuw i8, ptr %1199, i64 7624
  %1470 = load ptr, ptr %1469, align 8, !tbaa !73
  %1471 = getelementptr inbounds nuw i8, ptr %1199, i64 7632
  %1472 = load ptr, ptr %1471, align 16, !tbaa !74
  %1473 = getelementptr inbounds nuw i8, ptr %1199, i64 7640
  %1474 = load ptr, ptr %1473, align 8, !tbaa !75
  %1475 = getelementptr inbounds nuw i8, ptr %1199, i64 7608
  %1476 = load ptr, ptr %1475, align 8, !tbaa !76
  %1477 = getelementptr inbounds nuw i8, ptr %1199, i64 7616
  %1478 = load ptr, ptr %1477, align 64, !tbaa !77
  %1479 = icmp sgt i64 %1459, 0
  br i1 %1479, label %1480, label %1726

1480:                                             ; preds = %1452
  %1481 = load <8 x double>, ptr %1394, align 64, !tbaa !26
  %1482 = getelementptr inbounds nuw i8, ptr %1199, i64 2880
  %1483 = load <8 x double>, ptr %1482, align 64, !tbaa !26
  %1484 = getelementptr inbounds nuw i8, ptr %1199, i64 2816
  %1485 = load <8 x double>, ptr %1484, align 64, !tbaa !26
  %1486 = fmul <8 x double> %1328, splat (double -2.000000e+00)
  %1487 = fmul <8 x double> %1486, %1385
  %1488 = fmul <8 x double> %1385, %1487
  %1489 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1385, <8 x double> %1462, <8 x double> %1461)
  %1490 = fmul <8 x double> %1488, %1489
  %1491 = getelementptr inbounds nuw i8, ptr %1199, i64 7672
  %1492 = fmul <8 x double> %1382, %1483
  %1493 = fdiv <8 x double> %1485, %1454
  br label %1494

1494:                                             ; preds = %1480, %1578
  %1495 = phi <8 x double> [ %1481, %1480 ], [ %1582, %1578 ]
  %1496 = phi <8 x double> [ zeroinitializer, %1480 ], [ %1579, %1578 ]
  %1497 = phi <8 x double> [ zeroinitializer, %1480 ], [ %1580, %1578 ]
  %1498 = phi <8 x double> [ zeroinitializer, %1480 ], [ %1581, %1578 ]
  %1499 = phi <8 x double> [ zeroinitializer, %1480 ], [ %1608, %1578 ]
  %1500 = phi <8 x double> [ zeroinitializer, %1480 ], [ %1610, %1578 ]
  %1501 = phi <8 x double> [ %1456, %1480 ], [ %1583, %1578 ]
  %1502 = phi i64 [ 0, %1480 ], [ %1504, %1578 ]
  %1503 = phi <8 x double> [ zeroinitializer, %1480 ], [ %1584, %1578 ]
  %1504 = add nuw nsw i64 %1502, 1
  %1505 = icmp slt i64 %1504, %1459
  br i1 %1505, label %1506, label %1575

1506:                                             ; preds = %1494
  %1507 = getelementptr inbounds nuw <8 x double>, ptr %1394, i64 %1504
  %1508 = load <8 x double>, ptr %1507, align 64, !tbaa !26
  %1509 = icmp slt i64 %1504, %1343
  br i1 %1509, label %1517, label %1510

1510:                                             ; preds = %1506
  %1511 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1508, <8 x double> %1426, <8 x double> %1424)
  %1512 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1508, <8 x double> %1511, <8 x double> %1422)
  %1513 = fneg <8 x double> %1508
  %1514 = fmul <8 x double> %1508, %1513
  %1515 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1508, <8 x double> %1462, <8 x double> %1461)
  %1516 = fmul <8 x double> %1514, %1515
  br label %1517

1517:                                             ; preds = %1506, %1510
  %1518 = phi <8 x double> [ %1512, %1510 ], [ %1456, %1506 ]
  %1519 = phi <8 x double> [ %1516, %1510 ], [ zeroinitializer, %1506 ]
  %1520 = load i64, ptr %1342, align 64, !tbaa !31
  %1521 = icmp eq i64 %1520, 0
  %1522 = load ptr, ptr %1491, align 8, !tbaa !35
  br i1 %1521, label %1523, label %1527

1523:                                             ; preds = %1517
  %1524 = getelementptr inbounds nuw <8 x double>, ptr %1522, i64 %1504
  %1525 = load <8 x double>, ptr %1524, align 64, !tbaa !26
  %1526 = fmul <8 x double> %1381, %1525
  br label %1543

1527:                                             ; preds = %1517
  %1528 = shl nsw i64 %1504, 8
  %1529 = getelementptr inbounds nuw i8, ptr %1522, i64 %1528
  %1530 = load <8 x double>, ptr %1529, align 64, !tbaa !26
  %1531 = getelementptr inbounds nuw i8, ptr %1529, i64 64
  %1532 = load <8 x double>, ptr %1531, align 64, !tbaa !26
  %1533 = getelementptr inbounds nuw i8, ptr %1529, i64 128
  %1534 = load <8 x double>, ptr %1533, align 64, !tbaa !26
  %1535 = getelementptr inbounds nuw i8, ptr %1529, i64 192
  %1536 = load <8 x double>, ptr %1535, align 64, !tbaa !26
  %1537 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1536, <8 x double> %1534)
  %1538 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1537, <8 x double> %1532)
  %1539 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1293, <8 x double> %1538, <8 x double> %1530)
  %1540 = icmp slt i64 %1502, %1520
  %1541 = fmul <8 x double> %1381, %1539
  %1542 = select i1 %1540, <8 x double> %1539, <8 x double> %1541
  br label %1543

1543:                                             ; preds = %1527, %1523
  %1544 = phi <8 x double> [ %1526, %1523 ], [ %1542, %1527 ]
  %1545 = icmp slt i64 %1502, %1520
  br i1 %1545, label %1552, label %1546

1546:                                             ; preds = %1543
  %1547 = fadd <8 x double> %1495, %1508
  %1548 = fmul <8 x double> %1547, splat (double 5.000000e-01)
  %1549 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1548, <8 x double> %1406, <8 x double> %1404)
  %1550 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1548, <8 x double> %1549, <8 x double> %1402)
  %1551 = fmul <8 x double> %1550, %1544
  br label %1562

1552:                                             ; preds = %1543
  %1553 = icmp slt i64 %1504, %1520
  br i1 %1553, label %1554, label %1556

1554:                                             ; preds = %1552
  %1555 = fmul <8 x double> %1454, %1544
  br label %1562

1556:                                             ; preds = %1552
  %1557 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1508, <8 x double> %1406, <8 x double> %1404)
  %1558 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1508, <8 x double> %1557, <8 x double> %1402)
  %1559 = fdiv <8 x double> %1492, %1558
  %1560 = fadd <8 x double> %1493, %1559
  %1561 = fdiv <8 x double> %1544, %1560
  br label %1562

1562:                                             ; preds = %1546, %1554, %1556
  %1563 = phi <8 x double> [ %1551, %1546 ], [ %1555, %1554 ], [ %1561, %1556 ]
  br i1 %1509, label %1568, label %1564

1564:                                             ; preds = %1562
  %1565 = getelementptr inbounds nuw <8 x double>, ptr %1464, i64 %1504
  %1566 = load <8 x double>, ptr %1565, align 64, !tbaa !26
  %1567 = fmul <8 x double> %1328, %1566
  br label %1568

1568:                                             ; preds = %1562, %1564
  %1569 = phi <8 x double> [ %1567, %1564 ], [ zeroinitializer, %1562 ]
  %1570 = fneg <8 x double> %1569
  %1571 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1570, <8 x double> %1501, <8 x double> %1563)
  %1572 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1569, <8 x double> %1518, <8 x double> %1563)
  %1573 = fadd <8 x double> %1503, %1519
  %1574 = fmul <8 x double> %1573, %1569
  br label %1578

1575:                                             ; preds = %1494
  %1576 = load <8 x double>, ptr %1419, align 64, !tbaa !26
  %1577 = load <8 x double>, ptr %1430, align 64, !tbaa !26
  br label %1578

1578:                                             ; preds = %1575, %1568
  %1579 = phi <8 x double> [ %1571, %1568 ], [ %1576, %1575 ]
  %1580 = phi <8 x double> [ %1572, %1568 ], [ %1577, %1575 ]
  %1581 = phi <8 x double> [ %1574, %1568 ], [ %1490, %1575 ]
  %1582 = phi <8 x double> [ %1508, %1568 ], [ %1495, %1575 ]
  %1583 = phi <8 x double> [ %1518, %1568 ], [ %1501, %1575 ]
  %1584 = phi <8 x double> [ %1519, %1568 ], [ %1503, %1575 ]
  %1585 = getelementptr inbounds nuw <8 x double>, ptr %1466, i64 %1502
  %1586 = load <8 x double>, ptr %1585, align 64, !tbaa !26
  %1587 = icmp slt i64 %1502, %1343
  %1588 = select i1 %1587, <8 x double> %1458, <8 x double> %1460
  %1589 = fmul <8 x double> %1244, %1588
  %1590 = fmul <8 x double> %1589, %1586
  %1591 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1590, <8 x double> %1501, <8 x double> %1579)
  %1592 = fadd <8 x double> %1497, %1591
  %1593 = fsub <8 x double> %1581, %1498
  %1594 = fneg <8 x double> %1590
  %1595 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1594, <8 x double> %1503, <8 x double> %1593)
  %1596 = getelementptr inbounds nuw <8 x double>, ptr %1468, i64 %1502
  %1597 = load <8 x double>, ptr %1596, align 64, !tbaa !26
  %1598 = fsub <8 x double> %1595, %1597
  %1599 = fneg <8 x double> %1496
  %1600 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1599, <8 x double> %1500, <8 x double> %1592)
  %1601 = fdiv <8 x double> splat (double 1.000000e+00), %1600
  %1602 = getelementptr inbounds nuw <8 x double>, ptr %1470, i64 %1502
  store <8 x double> %1598, ptr %1602, align 64, !tbaa !26
  %1603 = getelementptr inbounds nuw <8 x double>, ptr %1472, i64 %1502
  store <8 x double> %1496, ptr %1603, align 64, !tbaa !26
  %1604 = fadd <8 x double> %1496, %1580
  %1605 = fsub <8 x double> %1604, %1592
  %1606 = getelementptr inbounds nuw <8 x double>, ptr %1474, i64 %1502
  store <8 x double> %1605, ptr %1606, align 64, !tbaa !26
  %1607 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1496, <8 x double> %1499, <8 x double> %1598)
  %1608 = fmul <8 x double> %1607, %1601
  %1609 = getelementptr inbounds nuw <8 x double>, ptr %1476, i64 %1502
  store <8 x double> %1608, ptr %1609, align 64, !tbaa !26
  %1610 = fmul <8 x double> %1580, %1601
  %1611 = getelementptr inbounds nuw <8 x double>, ptr %1478, i64 %1502
  store <8 x double> %1610, ptr %1611, align 64, !tbaa !26
  %1612 = icmp eq i64 %1504, %1459
  br i1 %1612, label %1726, label %1494, !llvm.loop !78

1613:                                             ; preds = %1380
  %1614 = getelementptr inbounds nuw i8, ptr %1199, i64 1536
  %1615 = load <8 x double>, ptr %1614, align 64, !tbaa !26
  %1616 = load i64, ptr %141, align 16, !tbaa !21
  %1617 = fdiv <8 x double> %1340, %1293
  %1618 = fsub <8 x double> %1319, %1615
  %1619 = fmul <8 x double> %1244, %1618
  %1620 = fmul <8 x double> %1424, splat (double 5.000000e-01)
  %1621 = fmul <8 x double> %1426, splat (double 0x3FE5555555555555)
  %1622 = getelementptr inbounds nuw i8, ptr %1199, i64 7648
  %1623 = load ptr, ptr %1622, align 32, !tbaa !72
  %1624 = getelementptr inbounds nuw i8, ptr %1199, i64 7656
  %1625 = load ptr, ptr %1624, align 8, !tbaa !49
  %1626 = getelementptr inbounds nuw i8, ptr %1199, i64 7584
  %1627 = load ptr, ptr %1626, align 32, !tbaa !59
  %1628 = getelementptr inbounds nuw i8, ptr %1199, i64 7624
  %1629 = load ptr, ptr %1628, align 8, !tbaa !73
  %1630 = getelementptr inbounds nuw i8, ptr %1199, i64 7632
  %1631 = load ptr, ptr %1630, align 16, !tbaa !74
  %1632 = getelementptr inbounds nuw i8, ptr %1199, i64 7640
  %1633 = load ptr, ptr %1632, align 8, !tbaa !75
  %1634 = getelementptr inbounds nuw i8, ptr %1199, i64 7608
  %1635 = load ptr, ptr %1634, align 8, !tbaa !76
  %1636 = getelementptr inbounds nuw i8, ptr %1199, i64 7616
  %1637 = load ptr, ptr %1636, align 64, !tbaa !77
  %1638 = icmp sgt i64 %1616, 0
  br i1 %1638, label %1639, label %1726

1639:                                             ; preds = %1613
  %1640 = load <8 x double>, ptr %1394, align 64, !tbaa !26
  %1641 = fneg <8 x double> %1640
  %1642 = fmul <8 x double> %1640, %1641
  %1643 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1640, <8 x double> %1621, <8 x double> %1620)
  %1644 = fmul <8 x double> %1642, %1643
  %1645 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1640, <8 x double> %1426, <8 x double> %1424)
  %1646 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1640, <8 x double> %1645, <8 x double> %1422)
  %1647 = fmul <8 x double> %1328, splat (double -2.000000e+00)
  %1648 = fmul <8 x double> %1647, %1385
  %1649 = fmul <8 x double> %1385, %1648
  %1650 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1385, <8 x double> %1621, <8 x double> %1620)
  %1651 = fmul <8 x double> %1649, %1650
  %1652 = getelementptr inbounds nuw i8, ptr %1199, i64 7672
  br label %1653

1653:                                             ; preds = %1639, %1694
  %1654 = phi <8 x double> [ %1640, %1639 ], [ %1698, %1694 ]
  %1655 = phi <8 x double> [ zeroinitializer, %1639 ], [ %1695, %1694 ]
  %1656 = phi <8 x double> [ zeroinitializer, %1639 ], [ %1696, %1694 ]
  %1657 = phi <8 x double> [ zeroinitializer, %1639 ], [ %1697, %1694 ]
  %1658 = phi <8 x double> [ zeroinitializer, %1639 ], [ %1721, %1694 ]
  %1659 = phi <8 x double> [ zeroinitializer, %1639 ], [ %1723, %1694 ]
  %1660 = phi <8 x double> [ %1646, %1639 ], [ %1699, %1694 ]
  %1661 = phi i64 [ 0, %1639 ], [ %1663, %1694 ]
  %1662 = phi <8 x double> [ %1644, %1639 ], [ %1700, %1694 ]
  %1663 = add nuw nsw i64 %1661, 1
  %1664 = icmp slt i64 %1663, %1616
  br i1 %1664, label %1665, label %1691

1665:                                             ; preds = %1653
  %1666 = getelementptr inbounds nuw <8 x double>, ptr %1394, i64 %1663
  %1667 = load <8 x double>, ptr %1666, align 64, !tbaa !26
  %1668 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1667, <8 x double> %1426, <8 x double> %1424)
  %1669 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1667, <8 x double> %1668, <8 x double> %1422)
  %1670 = fneg <8 x double> %1667
  %1671 = fmul <8 x double> %1667, %1670
  %1672 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1667, <8 x double> %1621, <8 x double> %1620)
  %1673 = fmul <8 x double> %1671, %1672
  %1674 = fadd <8 x double> %1654, %1667
  %1675 = fmul <8 x double> %1674, splat (double 5.000000e-01)
  %1676 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1675, <8 x double> %1406, <8 x double> %1404)
  %1677 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1675, <8 x double> %1676, <8 x double> %1402)
  %1678 = load ptr, ptr %1652, align 8, !tbaa !35
  %1679 = getelementptr inbounds nuw <8 x double>, ptr %1678, i64 %1663
  %1680 = load <8 x double>, ptr %1679, align 64, !tbaa !26
  %1681 = fmul <8 x double> %1617, %1680
  %1682 = fmul <8 x double> %1681, %1677
  %1683 = getelementptr inbounds nuw <8 x double>, ptr %1623, i64 %1663
  %1684 = load <8 x double>, ptr %1683, align 64, !tbaa !26
  %1685 = fmul <8 x double> %1328, %1684
  %1686 = fneg <8 x double> %1685
  %1687 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1686, <8 x double> %1660, <8 x double> %1682)
  %1688 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1685, <8 x double> %1669, <8 x double> %1682)
  %1689 = fadd <8 x double> %1662, %1673
  %1690 = fmul <8 x double> %1689, %1685
  br label %1694

1691:                                             ; preds = %1653
  %1692 = load <8 x double>, ptr %1419, align 64, !tbaa !26
  %1693 = load <8 x double>, ptr %1430, align 64, !tbaa !26
  br label %1694

1694:                                             ; preds = %1691, %1665
  %1695 = phi <8 x double> [ %1687, %1665 ], [ %1692, %1691 ]
  %1696 = phi <8 x double> [ %1688, %1665 ], [ %1693, %1691 ]
  %1697 = phi <8 x double> [ %1690, %1665 ], [ %1651, %1691 ]
  %1698 = phi <8 x double> [ %1667, %1665 ], [ %1654, %1691 ]
  %1699 = phi <8 x double> [ %1669, %1665 ], [ %1660, %1691 ]
  %1700 = phi <8 x double> [ %1673, %1665 ], [ %1662, %1691 ]
  %1701 = getelementptr inbounds nuw <8 x double>, ptr %1625, i64 %1661
  %1702 = load <8 x double>, ptr %1701, align 64, !tbaa !26
  %1703 = fmul <8 x double> %1619, %1702
  %1704 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1703, <8 x double> %1660, <8 x double> %1695)
  %1705 = fadd <8 x double> %1656, %1704
  %1706 = fsub <8 x double> %1697, %1657
  %1707 = fneg <8 x double> %1703
  %1708 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1707, <8 x double> %1662, <8 x double> %1706)
  %1709 = getelementptr inbounds nuw <8 x double>, ptr %1627, i64 %1661
  %1710 = load <8 x double>, ptr %1709, align 64, !tbaa !26
  %1711 = fsub <8 x double> %1708, %1710
  %1712 = fneg <8 x double> %1655
  %1713 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1712, <8 x double> %1659, <8 x double> %1705)
  %1714 = fdiv <8 x double> splat (double 1.000000e+00), %1713
  %1715 = getelementptr inbounds nuw <8 x double>, ptr %1629, i64 %1661
  store <8 x double> %1711, ptr %1715, align 64, !tbaa !26
  %1716 = getelementptr inbounds nuw <8 x double>, ptr %1631, i64 %1661
  store <8 x double> %1655, ptr %1716, align 64, !tbaa !26
  %1717 = fadd <8 x double> %1655, %1696
  %1718 = fsub <8 x double> %1717, %1705
  %1719 = getelementptr inbounds nuw <8 x double>, ptr %1633, i64 %1661
  store <8 x double> %1718, ptr %1719, align 64, !tbaa !26
  %1720 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1655, <8 x double> %1658, <8 x double> %1711)
  %1721 = fmul <8 x double> %1720, %1714
  %1722 = getelementptr inbounds nuw <8 x double>, ptr %1635, i64 %1661
  store <8 x double> %1721, ptr %1722, align 64, !tbaa !26
  %1723 = fmul <8 x double> %1696, %1714
  %1724 = getelementptr inbounds nuw <8 x double>, ptr %1637, i64 %1661
  store <8 x double> %1723, ptr %1724, align 64, !tbaa !26
  %1725 = icmp eq i64 %1663, %1616
  br i1 %1725, label %1726, label %1653, !llvm.loop !79

1726:                                             ; preds = %1578, %1694, %1452, %1613
  %1727 = getelementptr inbounds nuw i8, ptr %1199, i64 7608
  %1728 = load ptr, ptr %1727, align 8, !tbaa !76
  %1729 = load i64, ptr %141, align 16, !tbaa !21
  %1730 = add nsw i64 %1729, -1
  %1731 = getelementptr inbounds <8 x double>, ptr %1728, i64 %1730
  %1732 = load <8 x double>, ptr %1731, align 64, !tbaa !26
  %1733 = getelementptr inbounds nuw i8, ptr %1199, i64 7616
  %1734 = load ptr, ptr %1733, align 64, !tbaa !77
  %1735 = getelementptr inbounds <8 x double>, ptr %1734, i64 %1730
  %1736 = load <8 x double>, ptr %1735, align 64, !tbaa !26
  %1737 = load <8 x double>, ptr %1419, align 64, !tbaa !26
  %1738 = fmul <8 x double> %1732, %1737
  %1739 = fsub <8 x double> splat (double 1.000000e+00), %1736
  %1740 = fmul <8 x double> %1737, %1739
  %1741 = load <8 x double>, ptr %1446, align 64, !tbaa !26
  %1742 = load <8 x double>, ptr %1252, align 64, !tbaa !26
  %1743 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1741, <8 x double> %1742, <8 x double> %1738)
  %1744 = load <8 x double>, ptr %1291, align 64, !tbaa !26
  %1745 = fsub <8 x double> %1743, %1744
  %1746 = fadd <8 x double> %1740, %1741
  %1747 = load <8 x double>, ptr %1288, align 64, !tbaa !26
  %1748 = fadd <8 x double> %1746, %1747
  %1749 = load <8 x i64>, ptr %1280, align 64, !tbaa !26
  %1750 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1749)
  %1751 = icmp eq i64 %1750, 0
  %1752 = load i64, ptr %142, align 8, !tbaa !22
  br i1 %1751, label %1753, label %1768

1753:                                             ; preds = %1726
  %1754 = icmp slt i64 %1752, 0
  br i1 %1754, label %1759, label %1755

1755:                                             ; preds = %1753
  %1756 = getelementptr inbounds nuw i8, ptr %1199, i64 1408
  %1757 = getelementptr inbounds nuw i8, ptr %1199, i64 7728
  %1758 = load <8 x double>, ptr %1756, align 64, !tbaa !26
  br label %1761

1759:                                             ; preds = %1761, %1753
  %1760 = getelementptr inbounds nuw i8, ptr %1199, i64 5824
  store <8 x double> %1745, ptr %1760, align 64, !tbaa !26
  br label %1895

1761:                                             ; preds = %1755, %1761
  %1762 = phi i64 [ 0, %1755 ], [ %1765, %1761 ]
  %1763 = load ptr, ptr %1757, align 16, !tbaa !80
  %1764 = getelementptr inbounds nuw <8 x double>, ptr %1763, i64 %1762
  store <8 x double> %1758, ptr %1764, align 64, !tbaa !26
  %1765 = add nuw nsw i64 %1762, 1
  %1766 = load i64, ptr %142, align 8, !tbaa !22
  %1767 = icmp slt i64 %1762, %1766
  br i1 %1767, label %1761, label %1759, !llvm.loop !81

1768:                                             ; preds = %1726
  %1769 = load <8 x double>, ptr %1259, align 64, !tbaa !26
  %1770 = load <8 x double>, ptr %1308, align 64, !tbaa !26
  %1771 = getelementptr inbounds nuw i8, ptr %1199, i64 1280
  %1772 = load <8 x double>, ptr %1771, align 64, !tbaa !26
  %1773 = fmul <8 x double> %1770, %1772
  %1774 = load <8 x double>, ptr %1199, align 64, !tbaa !26
  %1775 = fsub <8 x double> %1774, %1769
  %1776 = sitofp i64 %1752 to double
  %1777 = insertelement <8 x double> poison, double %1776, i64 0
  %1778 = shufflevector <8 x double> %1777, <8 x double> poison, <8 x i32> zeroinitializer
  %1779 = fdiv <8 x double> %1775, %1778
  %1780 = load <8 x double>, ptr %1449, align 64, !tbaa !26
  %1781 = load <8 x double>, ptr %1451, align 64, !tbaa !26
  %1782 = getelementptr inbounds nuw i8, ptr %1199, i64 1408
  %1783 = load <8 x double>, ptr %1782, align 64, !tbaa !26
  %1784 = getelementptr inbounds nuw i8, ptr %1199, i64 7728
  %1785 = load ptr, ptr %1784, align 16, !tbaa !80
  %1786 = getelementptr inbounds <8 x double>, ptr %1785, i64 %1752
  store <8 x double> %1783, ptr %1786, align 64, !tbaa !26
  %1787 = icmp sgt i64 %1752, 0
  br i1 %1787, label %1788, label %1879

1788:                                             ; preds = %1768
  %1789 = fneg <8 x double> %1773
  %1790 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1789, <8 x double> %1781, <8 x double> %1780)
  %1791 = fsub <8 x double> splat (double 1.000000e+00), %1781
  %1792 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1773, <8 x double> %1791, <8 x double> %1780)
  %1793 = getelementptr inbounds nuw i8, ptr %1199, i64 7736
  %1794 = getelementptr inbounds nuw i8, ptr %1199, i64 7744
  %1795 = getelementptr inbounds nuw i8, ptr %1199, i64 768
  %1796 = fmul <8 x double> %1773, splat (double -5.000000e-01)
  %1797 = getelementptr inbounds nuw i8, ptr %1199, i64 7704
  %1798 = getelementptr inbounds nuw i8, ptr %1199, i64 7712
  %1799 = getelementptr inbounds nuw i8, ptr %1199, i64 7720
  br label %1800

1800:                                             ; preds = %1788, %1854
  %1801 = phi <8 x double> [ %1792, %1788 ], [ %1856, %1854 ]
  %1802 = phi <8 x double> [ %1790, %1788 ], [ %1857, %1854 ]
  %1803 = phi <8 x double> [ %1742, %1788 ], [ %1872, %1854 ]
  %1804 = phi <8 x double> [ zeroinitializer, %1788 ], [ %1875, %1854 ]
  %1805 = phi <8 x double> [ %1783, %1788 ], [ %1818, %1854 ]
  %1806 = phi i64 [ %1752, %1788 ], [ %1807, %1854 ]
  %1807 = add nsw i64 %1806, -1
  %1808 = uitofp nneg i64 %1807 to double
  %1809 = insertelement <8 x double> poison, double %1808, i64 0
  %1810 = shufflevector <8 x double> %1809, <8 x double> poison, <8 x i32> zeroinitializer
  %1811 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1810, <8 x double> %1779, <8 x double> %1769)
  %1812 = load <8 x double>, ptr %1309, align 64, !tbaa !26
  %1813 = load <8 x double>, ptr %1311, align 64, !tbaa !26
  %1814 = load <8 x double>, ptr %1313, align 64, !tbaa !26
  %1815 = load <8 x double>, ptr %1315, align 64, !tbaa !26
  %1816 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1811, <8 x double> %1815, <8 x double> %1814)
  %1817 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1811, <8 x double> %1816, <8 x double> %1813)
  %1818 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1811, <8 x double> %1817, <8 x double> %1812)
  %1819 = load <8 x double>, ptr %1243, align 64, !tbaa !26
  %1820 = load <8 x double>, ptr %1229, align 64, !tbaa !26
  %1821 = load ptr, ptr %1793, align 8, !tbaa !50
  %1822 = getelementptr inbounds nuw <8 x double>, ptr %1821, i64 %1807
  %1823 = load <8 x double>, ptr %1822, align 64, !tbaa !26
  %1824 = fmul <8 x double> %1820, %1823
  %1825 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1819, <8 x double> %1818, <8 x double> %1824)
  %1826 = load <8 x double>, ptr %1233, align 64, !tbaa !26
  %1827 = load ptr, ptr %1794, align 64, !tbaa !60
  %1828 = getelementptr inbounds nuw <8 x double>, ptr %1827, i64 %1807
  %1829 = load <8 x double>, ptr %1828, align 64, !tbaa !26
  %1830 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1826, <8 x double> %1829, <8 x double> %1825)
  %1831 = fmul <8 x double> %1830, splat (double 5.000000e-01)
  %1832 = icmp eq i64 %1806, 1
  br i1 %1832, label %1848, label %1833

1833:                                             ; preds = %1800
  %1834 = load <8 x double>, ptr %1795, align 64, !tbaa !26
  %1835 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1831, <8 x double> %1834, <8 x double> %1796)
  %1836 = load <8 x double>, ptr %1392, align 64, !tbaa !26
  %1837 = fmul <8 x double> %1778, %1836
  %1838 = load <8 x double>, ptr %1330, align 64, !tbaa !26
  %1839 = load <8 x double>, ptr %1332, align 64, !tbaa !26
  %1840 = load <8 x double>, ptr %1334, align 64, !tbaa !26
  %1841 = load <8 x double>, ptr %1336, align 64, !tbaa !26
  %1842 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1811, <8 x double> %1841, <8 x double> %1840)
  %1843 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1811, <8 x double> %1842, <8 x double> %1839)
  %1844 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1811, <8 x double> %1843, <8 x double> %1838)
  %1845 = fmul <8 x double> %1837, %1844
  %1846 = fsub <8 x double> %1845, %1835
  %1847 = fadd <8 x double> %1835, %1845
  br label %1854

1848:                                             ; preds = %1800
  %1849 = load <8 x double>, ptr %1446, align 64, !tbaa !26
  %1850 = load <8 x double>, ptr %1795, align 64, !tbaa !26
  %1851 = fmul <8 x double> %1831, splat (double -2.000000e+00)
  %1852 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1851, <8 x double> %1850, <8 x double> %1849)
  %1853 = fadd <8 x double> %1773, %1852
  br label %1854

1854:                                             ; preds = %1848, %1833
  %1855 = phi <8 x double> [ %1834, %1833 ], [ %1850, %1848 ]
  %1856 = phi <8 x double> [ %1846, %1833 ], [ %1853, %1848 ]
  %1857 = phi <8 x double> [ %1847, %1833 ], [ %1849, %1848 ]
  %1858 = fsub <8 x double> %1805, %1818
  %1859 = fmul <8 x double> %1819, %1858
  %1860 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1859, <8 x double> %1855, <8 x double> %1801)
  %1861 = fadd <8 x double> %1857, %1860
  %1862 = fneg <8 x double> %1802
  %1863 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1862, <8 x double> %1804, <8 x double> %1861)
  %1864 = fdiv <8 x double> splat (double 1.000000e+00), %1863
  %1865 = load ptr, ptr %1784, align 16, !tbaa !80
  %1866 = getelementptr inbounds nuw <8 x double>, ptr %1865, i64 %1807
  store <8 x double> %1818, ptr %1866, align 64, !tbaa !26
  %1867 = load ptr, ptr %1797, align 8, !tbaa !63
  %1868 = getelementptr inbounds nuw <8 x double>, ptr %1867, i64 %1807
  %1869 = load <8 x double>, ptr %1868, align 64, !tbaa !26
  %1870 = fneg <8 x double> %1869
  %1871 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1802, <8 x double> %1803, <8 x double> %1870)
  %1872 = fmul <8 x double> %1864, %1871
  %1873 = load ptr, ptr %1798, align 32, !tbaa !82
  %1874 = getelementptr inbounds nuw <8 x double>, ptr %1873, i64 %1807
  store <8 x double> %1872, ptr %1874, align 64, !tbaa !26
  %1875 = fmul <8 x double> %1856, %1864
  %1876 = load ptr, ptr %1799, align 8, !tbaa !83
  %1877 = getelementptr inbounds nuw <8 x double>, ptr %1876, i64 %1807
  store <8 x double> %1875, ptr %1877, align 64, !tbaa !26
  %1878 = icmp samesign ugt i64 %1806, 1
  br i1 %1878, label %1800, label %1879, !llvm.loop !84

1879:                                             ; preds = %1854, %1768
  %1880 = load <8 x i64>, ptr %1280, align 64, !tbaa !26
  %1881 = load <8 x double>, ptr %1446, align 64, !tbaa !26
  %1882 = getelementptr inbounds nuw i8, ptr %1199, i64 7712
  %1883 = load ptr, ptr %1882, align 32, !tbaa !82
  %1884 = load <8 x double>, ptr %1883, align 64, !tbaa !26
  %1885 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1881, <8 x double> %1884, <8 x double> %1738)
  %1886 = icmp eq <8 x i64> %1880, zeroinitializer
  %1887 = select <8 x i1> %1886, <8 x double> %1745, <8 x double> %1885
  %1888 = getelementptr inbounds nuw i8, ptr %1199, i64 5824
  store <8 x double> %1887, ptr %1888, align 64, !tbaa !26
  %1889 = getelementptr inbounds nuw i8, ptr %1199, i64 7720
  %1890 = load ptr, ptr %1889, align 8, !tbaa !83
  %1891 = load <8 x double>, ptr %1890, align 64, !tbaa !26
  %1892 = fsub <8 x double> splat (double 1.000000e+00), %1891
  %1893 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1881, <8 x double> %1892, <8 x double> %1740)
  %1894 = select <8 x i1> %1886, <8 x double> %1748, <8 x double> %1893
  br label %1895

1895:                                             ; preds = %1759, %1879
  %1896 = phi <8 x double> [ %1748, %1759 ], [ %1894, %1879 ]
  %1897 = getelementptr inbounds nuw i8, ptr %1199, i64 5888
  store <8 x double> %1896, ptr %1897, align 64, !tbaa !26
  %1898 = add nuw nsw i64 %1197, 1
  %1899 = load i64, ptr %178, align 8, !tbaa !20
  %1900 = icmp slt i64 %1898, %1899
  br i1 %1900, label %1196, label %1193, !llvm.loop !85

1901:                                             ; preds = %2004
  %1902 = icmp sgt i64 %2005, 0
  br label %1903

1903:                                             ; preds = %1901, %1191, %1193
  %1904 = phi <8 x double> [ %1194, %1193 ], [ %1192, %1191 ], [ %1194, %1901 ]
  %1905 = phi i1 [ false, %1193 ], [ false, %1191 ], [ %1902, %1901 ]
  %1906 = fcmp ogt <8 x double> %1904, zeroinitializer
  %1907 = bitcast <8 x i1> %1906 to i8
  %1908 = icmp eq i8 %1907, 0
  br i1 %1908, label %2091, label %2008

1909:                                             ; preds = %1193, %2004
  %1910 = phi i64 [ %2005, %2004 ], [ %1899, %1193 ]
  %1911 = phi i64 [ %2006, %2004 ], [ 0, %1193 ]
  %1912 = load ptr, ptr %151, align 8, !tbaa !28
  %1913 = getelementptr inbounds nuw %struct.Piece, ptr %1912, i64 %1911
  %1914 = getelementptr inbounds nuw i8, ptr %1913, i64 7488
  %1915 = load <8 x i64>, ptr %1914, align 64, !tbaa !26
  %1916 = getelementptr inbounds nuw i8, ptr %1913, i64 2240
  %1917 = load <8 x double>, ptr %1916, align 64, !tbaa !26
  %1918 = fcmp ogt <8 x double> %1917, zeroinitializer
  %1919 = select <8 x i1> %1918, <8 x i64> %1915, <8 x i64> zeroinitializer
  %1920 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1919)
  %1921 = icmp eq i64 %1920, 0
  br i1 %1921, label %2004, label %1922

1922:                                             ; preds = %1909
  %1923 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %1924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1923, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1925 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1923, <8 x double> %1924, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1926 = load <8 x double>, ptr %199, align 64, !tbaa !26
  %1927 = getelementptr inbounds nuw i8, ptr %1913, i64 5824
  %1928 = load <8 x double>, ptr %1927, align 64, !tbaa !26
  %1929 = getelementptr inbounds nuw i8, ptr %1913, i64 5888
  %1930 = load <8 x double>, ptr %1929, align 64, !tbaa !26
  %1931 = fdiv <8 x double> %1928, %1930
  %1932 = fcmp olt <8 x double> %1931, %1923
  %1933 = select <8 x i1> %1932, <8 x double> %1931, <8 x double> %1923
  %1934 = getelementptr inbounds nuw i8, ptr %1913, i64 3520
  %1935 = load <8 x double>, ptr %1934, align 64, !tbaa !26
  %1936 = fcmp olt <8 x double> %1935, %1933
  %1937 = select <8 x i1> %1936, <8 x double> %1935, <8 x double> %1933
  %1938 = fneg <8 x double> %1930
  %1939 = getelementptr inbounds nuw i8, ptr %1913, i64 7104
  %1940 = load <8 x double>, ptr %1939, align 64, !tbaa !26
  br label %1944

1941:                                             ; preds = %1944
  %1942 = getelementptr inbounds nuw i8, ptr %1913, i64 5952
  store <8 x double> %1995, ptr %1942, align 64, !tbaa !26
  %1943 = load i64, ptr %178, align 8, !tbaa !20
  br label %2004

1944:                                             ; preds = %1922, %1944
  %1945 = phi <8 x i64> [ %1919, %1922 ], [ %1998, %1944 ]
  %1946 = phi i32 [ 0, %1922 ], [ %1999, %1944 ]
  %1947 = phi <8 x double> [ %1937, %1922 ], [ %1995, %1944 ]
  %1948 = fadd <8 x double> %1947, splat (double 2.731500e+02)
  %1949 = fcmp ogt <8 x double> %1947, zeroinitializer
  %1950 = select <8 x i1> %1949, <8 x double> %1947, <8 x double> zeroinitializer
  %1951 = fadd <8 x double> %1950, splat (double 2.731500e+02)
  %1952 = fadd <8 x double> %1951, splat (double 0xC08451671D164BD4)
  %1953 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %1952
  %1954 = fsub <8 x double> %1951, %1953
  %1955 = fadd <8 x double> %1954, splat (double 0x40923C3565924845)
  %1956 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> %1955, <8 x double> splat (double 0xC12619EA558539E6))
  %1957 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %1958 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> %1957, <8 x double> splat (double 0xC148A99584203885))
  %1959 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %1960 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1954, <8 x double> %1959, <8 x double> splat (double 0x4118B9E59F2691E5))
  %1961 = fmul <8 x double> %1960, splat (double 2.000000e+00)
  %1962 = fmul <8 x double> %1956, splat (double 4.000000e+00)
  %1963 = fneg <8 x double> %1960
  %1964 = fmul <8 x double> %1962, %1963
  %1965 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1958, <8 x double> %1958, <8 x double> %1964)
  %1966 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1965)
  %1967 = fsub <8 x double> %1966, %1958
  %1968 = fdiv <8 x double> %1961, %1967
  %1969 = fmul <8 x double> %1968, %1968
  %1970 = fmul <8 x double> %1969, splat (double 1.000000e+06)
  %1971 = fmul <8 x double> %1969, %1970
  %1972 = fmul <8 x double> %1948, splat (double 4.615260e+02)
  %1973 = fdiv <8 x double> %1971, %1972
  %1974 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1938, <8 x double> %1947, <8 x double> %1928)
  %1975 = fsub <8 x double> %1973, %1926
  %1976 = fcmp ogt <8 x double> %1975, zeroinitializer
  %1977 = select <8 x i1> %1976, <8 x double> %1975, <8 x double> zeroinitializer
  %1978 = fmul <8 x double> %1925, %1977
  %1979 = fdiv <8 x double> %1978, %1940
  %1980 = fsub <8 x double> %1974, %1979
  %1981 = fmul <8 x double> %1925, %1973
  %1982 = fdiv <8 x double> %1925, %1972
  %1983 = fadd <8 x double> %1982, splat (double -1.000000e+00)
  %1984 = fmul <8 x double> %1983, %1981
  %1985 = fdiv <8 x double> %1984, %1948
  %1986 = fdiv <8 x double> %1985, %1940
  %1987 = fcmp ule <8 x double> %1973, %1926
  %1988 = select <8 x i1> %1987, <8 x double> zeroinitializer, <8 x double> %1986
  %1989 = fsub <8 x double> %1938, %1988
  %1990 = fdiv <8 x double> %1980, %1989
  %1991 = fsub <8 x double> %1947, %1990
  %1992 = fcmp olt <8 x double> %1991, %1933
  %1993 = select <8 x i1> %1992, <8 x double> %1991, <8 x double> %1933
  %1994 = icmp eq <8 x i64> %1945, zeroinitializer
  %1995 = select <8 x i1> %1994, <8 x double> %1947, <8 x double> %1993
  %1996 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1990)
  %1997 = fcmp oge <8 x double> %1996, splat (double 1.000000e-05)
  %1998 = select <8 x i1> %1997, <8 x i64> %1945, <8 x i64> zeroinitializer
  %1999 = add nuw nsw i32 %1946, 1
  %2000 = icmp samesign ult i32 %1946, 7
  %2001 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1998)
  %2002 = icmp ne i64 %2001, 0
  %2003 = select i1 %2000, i1 %2002, i1 false
  br i1 %2003, label %1944, label %1941, !llvm.loop !86

2004:                                             ; preds = %1909, %1941
  %2005 = phi i64 [ %1910, %1909 ], [ %1943, %1941 ]
  %2006 = add nuw nsw i64 %1911, 1
  %2007 = icmp slt i64 %2006, %2005
  br i1 %2007, label %1909, label %1901, !llvm.loop !87

2008:                                             ; preds = %1903
  %2009 = sext <8 x i1> %1906 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %2009, ptr %4, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %2010 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %2011 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2012 = fadd <8 x double> %2010, %2011
  store <8 x double> %2012, ptr %6, align 64, !tbaa !26
  %2013 = load ptr, ptr %189, align 8
  %2014 = load ptr, ptr %191, align 8
  %2015 = load ptr, ptr %192, align 8
  br label %2016

2016:                                             ; preds = %2086, %2008
  %2017 = phi i64 [ 0, %2008 ], [ %2087, %2086 ]
  %2018 = getelementptr inbounds nuw i64, ptr %4, i64 %2017
  %2019 = load i64, ptr %2018, align 8, !tbaa !30
  %2020 = icmp eq i64 %2019, 0
  br i1 %2020, label %2086, label %2021

2021:                                             ; preds = %2016
  %2022 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %2017
  %2023 = load i64, ptr %2022, align 8, !tbaa !30
  %2024 = shl nsw i64 %2023, 1
  %2025 = or disjoint i64 %2024, 1
  %2026 = getelementptr inbounds i64, ptr %2013, i64 %2025
  %2027 = load i64, ptr %2026, align 8, !tbaa !30
  %2028 = shl nuw nsw i64 %2017, 1
  %2029 = or disjoint i64 %2028, 1
  %2030 = getelementptr inbounds nuw [16 x i64], ptr %190, i64 0, i64 %2029
  %2031 = getelementptr inbounds i64, ptr %2015, i64 %2025
  %2032 = load i64, ptr %2031, align 8, !tbaa !30
  %2033 = shl nsw i64 %2032, 4
  %2034 = getelementptr inbounds i8, ptr %2014, i64 %2033
  %2035 = getelementptr inbounds nuw double, ptr %6, i64 %2017
  %2036 = load double, ptr %2035, align 8, !tbaa !43
  %2037 = load i64, ptr %2030, align 8, !tbaa !30
  %2038 = getelementptr i8, ptr %2034, i64 -16
  %2039 = icmp sgt i64 %2037, 0
  br i1 %2039, label %2040, label %2049

2040:                                             ; preds = %2021, %2046
  %2041 = phi i64 [ %2047, %2046 ], [ %2037, %2021 ]
  %2042 = shl i64 %2041, 4
  %2043 = getelementptr i8, ptr %2038, i64 %2042
  %2044 = load double, ptr %2043, align 8, !tbaa !43
  %2045 = fcmp ugt double %2036, %2044
  br i1 %2045, label %2049, label %2046

2046:                                             ; preds = %2040
  %2047 = add nsw i64 %2041, -1
  store i64 %2047, ptr %2030, align 8, !tbaa !30
  %2048 = icmp sgt i64 %2041, 1
  br i1 %2048, label %2040, label %2049, !llvm.loop !69

2049:                                             ; preds = %2046, %2040, %2021
  %2050 = phi i64 [ %2037, %2021 ], [ 0, %2046 ], [ %2041, %2040 ]
  %2051 = icmp slt i64 %2050, %2027
  br i1 %2051, label %2052, label %2061

2052:                                             ; preds = %2049, %2058
  %2053 = phi i64 [ %2059, %2058 ], [ %2050, %2049 ]
  %2054 = shl nsw i64 %2053, 4
  %2055 = getelementptr inbounds i8, ptr %2034, i64 %2054
  %2056 = load double, ptr %2055, align 8, !tbaa !43
  %2057 = fcmp ule double %2036, %2056
  br i1 %2057, label %2066, label %2058

2058:                                             ; preds = %2052
  %2059 = add i64 %2053, 1
  store i64 %2059, ptr %2030, align 8, !tbaa !30
  %2060 = icmp eq i64 %2059, %2027
  br i1 %2060, label %2061, label %2052, !llvm.loop !70

2061:                                             ; preds = %2058, %2049
  %2062 = shl i64 %2027, 4
  %2063 = getelementptr i8, ptr %2034, i64 %2062
  %2064 = getelementptr i8, ptr %2063, i64 -8
  %2065 = load double, ptr %2064, align 8, !tbaa !43
  br label %2083

2066:                                             ; preds = %2052
  %2067 = shl nsw i64 %2053, 1
  %2068 = or disjoint i64 %2067, 1
  %2069 = getelementptr inbounds double, ptr %2034, i64 %2068
  %2070 = load double, ptr %2069, align 8, !tbaa !43
  %2071 = icmp sgt i64 %2053, 0
  br i1 %2071, label %2072, label %2083

2072:                                             ; preds = %2066
  %2073 = getelementptr inbounds nuw i8, ptr %2034, i64 %2054
  %2074 = getelementptr i8, ptr %2073, i64 -8
  %2075 = load double, ptr %2074, align 8, !tbaa !43
  %2076 = getelementptr i8, ptr %2073, i64 -16
  %2077 = load double, ptr %2076, align 8, !tbaa !43
  %2078 = fsub double %2036, %2077
  %2079 = fsub double %2056, %2077
  %2080 = fdiv double %2078, %2079
  %2081 = fsub double %2070, %2075
  %2082 = tail call double @llvm.fmuladd.f64(double %2080, double %2081, double %2075)
  br label %2083

2083:                                             ; preds = %2072, %2066, %2061
  %2084 = phi double [ %2082, %2072 ], [ %2070, %2066 ], [ %2065, %2061 ]
  %2085 = getelementptr inbounds nuw double, ptr %5, i64 %2017
  store double %2084, ptr %2085, align 8, !tbaa !43
  br label %2086

2086:                                             ; preds = %2083, %2016
  %2087 = add nuw nsw i64 %2017, 1
  %2088 = icmp eq i64 %2087, 8
  br i1 %2088, label %2089, label %2016, !llvm.loop !71

2089:                                             ; preds = %2086
  %2090 = load <8 x double>, ptr %5, align 64, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %2091

2091:                                             ; preds = %1903, %2089
  %2092 = phi <8 x double> [ %2090, %2089 ], [ zeroinitializer, %1903 ]
  %2093 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %2094 = fcmp ogt <8 x double> %2093, zeroinitializer
  %2095 = sext <8 x i1> %2094 to <8 x i64>
  %2096 = xor <8 x i64> %2095, splat (i64 -1)
  %2097 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %2098 = fcmp oeq <8 x double> %2097, splat (double 1.000000e+00)
  %2099 = fcmp oeq <8 x double> %2097, splat (double 2.000000e+00)
  %2100 = or <8 x i1> %2098, %2099
  %2101 = select <8 x i1> %2100, <8 x i64> %2096, <8 x i64> zeroinitializer
  %2102 = xor <8 x i64> %2101, %2095
  %2103 = load <8 x double>, ptr %198, align 64, !tbaa !26
  %2104 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2105 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %2106 = icmp eq <8 x i64> %2102, splat (i64 -1)
  %2107 = select <8 x i1> %2106, <8 x double> %2105, <8 x double> %2104
  %2108 = bitcast <8 x i1> %2094 to i8
  %2109 = icmp eq i8 %2108, 0
  br i1 %2109, label %2141, label %2110

2110:                                             ; preds = %2091
  %2111 = select <8 x i1> %2094, <8 x double> %2092, <8 x double> %2107
  %2112 = fmul <8 x double> %2111, splat (double 0x3EB0C6F7A0B5ED8D)
  %2113 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2112)
  %2114 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2113)
  %2115 = fmul <8 x double> %2114, %2114
  %2116 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2114, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2115)
  %2117 = fadd <8 x double> %2116, splat (double 0x402DD4891DBECC6B)
  %2118 = fmul <8 x double> %2114, splat (double 0x40C77A698FD9BCCA)
  %2119 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2115, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2118)
  %2120 = fadd <8 x double> %2119, splat (double 0xC0B2D7440748F0B3)
  %2121 = fmul <8 x double> %2114, splat (double 0xC148A99584203885)
  %2122 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2115, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2121)
  %2123 = fadd <8 x double> %2122, splat (double 0x4118B9E59F2691E5)
  %2124 = fmul <8 x double> %2123, splat (double 2.000000e+00)
  %2125 = fneg <8 x double> %2120
  %2126 = fmul <8 x double> %2117, splat (double 4.000000e+00)
  %2127 = fneg <8 x double> %2123
  %2128 = fmul <8 x double> %2126, %2127
  %2129 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2120, <8 x double> %2120, <8 x double> %2128)
  %2130 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2129)
  %2131 = fsub <8 x double> %2125, %2130
  %2132 = fdiv <8 x double> %2124, %2131
  %2133 = fadd <8 x double> %2132, splat (double 0x408451671D164BD4)
  %2134 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2132, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2135 = fmul <8 x double> %2134, splat (double -4.000000e+00)
  %2136 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2133, <8 x double> %2133, <8 x double> %2135)
  %2137 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2136)
  %2138 = fsub <8 x double> %2133, %2137
  %2139 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2138, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2140 = select <8 x i1> %2094, <8 x double> %2139, <8 x double> %2103
  br label %2141

2141:                                             ; preds = %2110, %2091
  %2142 = phi <8 x double> [ %2111, %2110 ], [ %2107, %2091 ]
  %2143 = phi <8 x double> [ %2140, %2110 ], [ %2103, %2091 ]
  %2144 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2145 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %2146 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2147 = load <8 x double>, ptr %203, align 64, !tbaa !26
  %2148 = fmul <8 x double> %2146, %2147
  %2149 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2144, <8 x double> %2145, <8 x double> %2148)
  %2150 = load <8 x double>, ptr %204, align 64, !tbaa !26
  %2151 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2152 = load <8 x double>, ptr %206, align 64, !tbaa !26
  %2153 = fneg <8 x double> %2149
  %2154 = fmul <8 x double> %2152, %2153
  %2155 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2150, <8 x double> %2151, <8 x double> %2154)
  %2156 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2157 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2152, <8 x double> %2156, <8 x double> %2150)
  %2158 = fdiv <8 x double> %2155, %2157
  %2159 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2160 = select <8 x i1> %2106, <8 x double> %2159, <8 x double> %2104
  store <8 x double> %2160, ptr %207, align 64, !tbaa !26
  %2161 = load <8 x double>, ptr %208, align 64, !tbaa !26
  %2162 = select <8 x i1> %2106, <8 x double> %2161, <8 x double> %2158
  store <8 x double> %2162, ptr %208, align 64, !tbaa !26
  store <8 x double> %2142, ptr %201, align 64, !tbaa !26
  %2163 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %2164 = and <8 x i64> %2163, %2101
  %2165 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2164)
  %2166 = icmp eq i64 %2165, 0
  br i1 %2166, label %2633, label %2167

2167:                                             ; preds = %2141
  %2168 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %2169 = load <8 x double>, ptr %210, align 64, !tbaa !26
  %2170 = fmul <8 x double> %2146, %2169
  %2171 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2144, <8 x double> %2168, <8 x double> %2170)
  %2172 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %2173 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2174 = fdiv <8 x double> %2172, %2173
  %2175 = fmul <8 x double> %2104, splat (double 3.000000e-01)
  %2176 = load <8 x double>, ptr %213, align 64, !tbaa !26
  %2177 = fadd <8 x double> %2104, %2176
  %2178 = fadd <8 x double> %2177, splat (double 2.000000e+05)
  %2179 = fmul <8 x double> %2173, splat (double 2.870530e+02)
  %2180 = fdiv <8 x double> %2104, %2179
  %2181 = fcmp ogt <8 x double> %2142, %2175
  %2182 = select <8 x i1> %2181, <8 x double> %2142, <8 x double> %2175
  %2183 = fcmp olt <8 x double> %2182, %2178
  %2184 = select <8 x i1> %2183, <8 x double> %2182, <8 x double> %2178
  %2185 = icmp eq <8 x i64> %2101, zeroinitializer
  %2186 = select <8 x i1> %2185, <8 x double> %2142, <8 x double> %2184
  %2187 = fdiv <8 x double> %2160, splat (double 2.870530e+02)
  %2188 = fmul <8 x double> %2180, splat (double 2.000000e+00)
  %2189 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2188)
  br label %2190

2190:                                             ; preds = %2419, %2167
  %2191 = phi <8 x double> [ %2143, %2167 ], [ %2225, %2419 ]
  %2192 = phi <8 x double> [ %2175, %2167 ], [ %2576, %2419 ]
  %2193 = phi <8 x double> [ %2178, %2167 ], [ %2573, %2419 ]
  %2194 = phi <8 x i64> [ %2164, %2167 ], [ %2588, %2419 ]
  %2195 = phi i32 [ 0, %2167 ], [ %2593, %2419 ]
  %2196 = phi <8 x double> [ %2186, %2167 ], [ %2590, %2419 ]
  %2197 = fmul <8 x double> %2196, splat (double 0x3EB0C6F7A0B5ED8D)
  %2198 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2197)
  %2199 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2198)
  %2200 = fmul <8 x double> %2199, %2199
  %2201 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2199, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2200)
  %2202 = fadd <8 x double> %2201, splat (double 0x402DD4891DBECC6B)
  %2203 = fmul <8 x double> %2199, splat (double 0x40C77A698FD9BCCA)
  %2204 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2200, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2203)
  %2205 = fadd <8 x double> %2204, splat (double 0xC0B2D7440748F0B3)
  %2206 = fmul <8 x double> %2199, splat (double 0xC148A99584203885)
  %2207 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2200, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2206)
  %2208 = fadd <8 x double> %2207, splat (double 0x4118B9E59F2691E5)
  %2209 = fmul <8 x double> %2208, splat (double 2.000000e+00)
  %2210 = fneg <8 x double> %2205
  %2211 = fmul <8 x double> %2202, splat (double 4.000000e+00)
  %2212 = fneg <8 x double> %2208
  %2213 = fmul <8 x double> %2211, %2212
  %2214 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2205, <8 x double> %2205, <8 x double> %2213)
  %2215 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2214)
  %2216 = fsub <8 x double> %2210, %2215
  %2217 = fdiv <8 x double> %2209, %2216
  %2218 = fadd <8 x double> %2217, splat (double 0x408451671D164BD4)
  %2219 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2217, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2220 = fmul <8 x double> %2219, splat (double -4.000000e+00)
  %2221 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2218, <8 x double> %2218, <8 x double> %2220)
  %2222 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2221)
  %2223 = fsub <8 x double> %2218, %2222
  %2224 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2223, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2225 = select <8 x i1> %2185, <8 x double> %2191, <8 x double> %2224
  %2226 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2225, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2227 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2225, <8 x double> %2226, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2228 = load i64, ptr %178, align 8, !tbaa !20, !noalias !88
  %2229 = icmp sgt i64 %2228, 0
  br i1 %2229, label %2230, label %2419

2230:                                             ; preds = %2190
  %2231 = fdiv <8 x double> splat (double 1.000000e+00), %2227
  %2232 = fadd <8 x double> %2225, splat (double 1.000000e-09)
  br label %2233

2233:                                             ; preds = %2230, %2343
  %2234 = phi <8 x double> [ zeroinitializer, %2230 ], [ %2415, %2343 ]
  %2235 = phi <8 x double> [ zeroinitializer, %2230 ], [ %2414, %2343 ]
  %2236 = phi i64 [ 0, %2230 ], [ %2416, %2343 ]
  %2237 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !88
  %2238 = getelementptr inbounds nuw %struct.Piece, ptr %2237, i64 %2236
  %2239 = getelementptr inbounds nuw i8, ptr %2238, i64 5824
  %2240 = load <8 x double>, ptr %2239, align 64, !tbaa !26, !noalias !88
  %2241 = getelementptr inbounds nuw i8, ptr %2238, i64 5888
  %2242 = load <8 x double>, ptr %2241, align 64, !tbaa !26, !noalias !88
  %2243 = getelementptr inbounds nuw i8, ptr %2238, i64 7296
  %2244 = load <8 x double>, ptr %2243, align 64, !tbaa !26, !noalias !88
  %2245 = fcmp ule <8 x double> %2244, splat (double 1.000000e+00)
  %2246 = fmul <8 x double> %2225, %2242
  %2247 = fcmp ogt <8 x double> %2240, %2246
  %2248 = and <8 x i1> %2245, %2247
  %2249 = fneg <8 x double> %2242
  %2250 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2249, <8 x double> %2225, <8 x double> %2240)
  %2251 = fmul <8 x double> %2231, %2250
  %2252 = select <8 x i1> %2248, <8 x double> %2251, <8 x double> zeroinitializer
  %2253 = fmul <8 x double> %2231, %2249
  %2254 = fdiv <8 x double> %2240, %2242
  %2255 = select <8 x i1> %2248, <8 x double> %2225, <8 x double> %2254
  %2256 = getelementptr inbounds nuw i8, ptr %2238, i64 7488
  %2257 = load <8 x i64>, ptr %2256, align 64, !tbaa !26, !noalias !88
  %2258 = getelementptr inbounds nuw i8, ptr %2238, i64 2240
  %2259 = load <8 x double>, ptr %2258, align 64, !tbaa !26, !noalias !88
  %2260 = fcmp ule <8 x double> %2259, zeroinitializer
  %2261 = xor <8 x i1> %2245, splat (i1 true)
  %2262 = select <8 x i1> %2261, <8 x i1> splat (i1 true), <8 x i1> %2260
  %2263 = getelementptr inbounds nuw i8, ptr %2238, i64 5952
  %2264 = load <8 x double>, ptr %2263, align 64, !tbaa !26, !noalias !88
  %2265 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2249, <8 x double> %2264, <8 x double> %2240)
  %2266 = fcmp ogt <8 x double> %2265, zeroinitializer
  %2267 = select <8 x i1> %2266, <8 x double> %2265, <8 x double> zeroinitializer
  %2268 = fmul <8 x double> %2231, %2267
  %2269 = icmp eq <8 x i64> %2257, zeroinitializer
  %2270 = select <8 x i1> %2262, <8 x i1> splat (i1 true), <8 x i1> %2269
  %2271 = select <8 x i1> %2270, <8 x double> %2252, <8 x double> %2268
  %2272 = select <8 x i1> %2270, <8 x double> %2255, <8 x double> %2264
  %2273 = select <8 x i1> %2270, <8 x i1> %2248, <8 x i1> zeroinitializer
  %2274 = select <8 x i1> %2273, <8 x double> %2253, <8 x double> zeroinitializer
  %2275 = load i64, ptr %141, align 16, !tbaa !21, !noalias !91
  %2276 = sitofp i64 %2275 to double
  %2277 = insertelement <8 x double> poison, double %2276, i64 0
  %2278 = shufflevector <8 x double> %2277, <8 x double> poison, <8 x i32> zeroinitializer
  %2279 = icmp sgt i64 %2275, 0
  br i1 %2279, label %2280, label %2343

2280:                                             ; preds = %2233
  %2281 = getelementptr inbounds nuw i8, ptr %2238, i64 7608
  %2282 = load ptr, ptr %2281, align 8, !tbaa !76, !noalias !91
  %2283 = getelementptr inbounds nuw i8, ptr %2238, i64 7616
  %2284 = load ptr, ptr %2283, align 64, !tbaa !77, !noalias !91
  %2285 = getelementptr inbounds nuw i8, ptr %2238, i64 7552
  %2286 = load i64, ptr %2285, align 64, !tbaa !31, !noalias !91
  %2287 = getelementptr inbounds nuw i8, ptr %2238, i64 7632
  %2288 = getelementptr inbounds nuw i8, ptr %2238, i64 7624
  %2289 = getelementptr inbounds nuw i8, ptr %2238, i64 7640
  br label %2290

2290:                                             ; preds = %2280, %2325
  %2291 = phi <8 x i64> [ splat (i64 -1), %2280 ], [ %2305, %2325 ]
  %2292 = phi i64 [ %2275, %2280 ], [ %2296, %2325 ]
  %2293 = phi <8 x double> [ %2278, %2280 ], [ %2341, %2325 ]
  %2294 = phi <8 x double> [ zeroinitializer, %2280 ], [ %2337, %2325 ]
  %2295 = phi <8 x double> [ zeroinitializer, %2280 ], [ %2335, %2325 ]
  %2296 = add nsw i64 %2292, -1
  %2297 = getelementptr inbounds nuw <8 x double>, ptr %2282, i64 %2296
  %2298 = load <8 x double>, ptr %2297, align 64, !tbaa !26, !noalias !91
  %2299 = getelementptr inbounds nuw <8 x double>, ptr %2284, i64 %2296
  %2300 = load <8 x double>, ptr %2299, align 64, !tbaa !26, !noalias !91
  %2301 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2300, <8 x double> %2225, <8 x double> %2298)
  %2302 = fcmp ogt <8 x double> %2301, %2232
  %2303 = select <8 x i1> %2302, <8 x i64> %2291, <8 x i64> zeroinitializer
  %2304 = icmp sgt i64 %2292, %2286
  %2305 = select i1 %2304, <8 x i64> %2303, <8 x i64> zeroinitializer
  %2306 = icmp slt i64 %2292, %2275
  br i1 %2306, label %2307, label %2320

2307:                                             ; preds = %2290
  %2308 = load ptr, ptr %2287, align 16, !tbaa !74, !noalias !91
  %2309 = getelementptr inbounds nuw <8 x double>, ptr %2308, i64 %2292
  %2310 = load <8 x double>, ptr %2309, align 64, !tbaa !26, !noalias !91
  %2311 = fsub <8 x double> %2301, %2225
  %2312 = fmul <8 x double> %2311, %2310
  %2313 = icmp eq <8 x i64> %2305, %2291
  %2314 = select <8 x i1> %2313, <8 x double> zeroinitializer, <8 x double> %2312
  %2315 = fadd <8 x double> %2295, %2314
  %2316 = fadd <8 x double> %2300, splat (double -1.000000e+00)
  %2317 = fmul <8 x double> %2316, %2310
  %2318 = select <8 x i1> %2313, <8 x double> zeroinitializer, <8 x double> %2317
  %2319 = fadd <8 x double> %2294, %2318
  br label %2320

2320:                                             ; preds = %2307, %2290
  %2321 = phi <8 x double> [ %2315, %2307 ], [ %2295, %2290 ]
  %2322 = phi <8 x double> [ %2319, %2307 ], [ %2294, %2290 ]
  %2323 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2305)
  %2324 = icmp eq i64 %2323, 0
  br i1 %2324, label %2343, label %2325

2325:                                             ; preds = %2320
  %2326 = load ptr, ptr %2288, align 8, !tbaa !73, !noalias !91
  %2327 = getelementptr inbounds nuw <8 x double>, ptr %2326, i64 %2296
  %2328 = load <8 x double>, ptr %2327, align 64, !tbaa !26, !noalias !91
  %2329 = load ptr, ptr %2289, align 8, !tbaa !75, !noalias !91
  %2330 = getelementptr inbounds nuw <8 x double>, ptr %2329, i64 %2296
  %2331 = load <8 x double>, ptr %2330, align 64, !tbaa !26, !noalias !91
  %2332 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2331, <8 x double> %2225, <8 x double> %2328)
  %2333 = icmp eq <8 x i64> %2305, zeroinitializer
  %2334 = select <8 x i1> %2333, <8 x double> zeroinitializer, <8 x double> %2332
  %2335 = fadd <8 x double> %2321, %2334
  %2336 = select <8 x i1> %2333, <8 x double> zeroinitializer, <8 x double> %2331
  %2337 = fadd <8 x double> %2322, %2336
  %2338 = uitofp nneg i64 %2296 to double
  %2339 = insertelement <8 x double> poison, double %2338, i64 0
  %2340 = shufflevector <8 x double> %2339, <8 x double> poison, <8 x i32> zeroinitializer
  %2341 = select <8 x i1> %2333, <8 x double> %2293, <8 x double> %2340
  %2342 = icmp samesign ugt i64 %2292, 1
  br i1 %2342, label %2290, label %2343, !llvm.loop !94

2343:                                             ; preds = %2325, %2320, %2233
  %2344 = phi <8 x double> [ %2278, %2233 ], [ %2293, %2320 ], [ %2341, %2325 ]
  %2345 = phi <8 x double> [ zeroinitializer, %2233 ], [ %2321, %2320 ], [ %2335, %2325 ]
  %2346 = phi <8 x double> [ zeroinitializer, %2233 ], [ %2322, %2320 ], [ %2337, %2325 ]
  %2347 = getelementptr inbounds nuw i8, ptr %2238, i64 6080
  %2348 = load <8 x double>, ptr %2347, align 64, !tbaa !26, !noalias !88
  %2349 = getelementptr inbounds nuw i8, ptr %2238, i64 5504
  %2350 = load <8 x double>, ptr %2349, align 64, !tbaa !26, !noalias !88
  %2351 = getelementptr inbounds nuw i8, ptr %2238, i64 7040
  %2352 = load <8 x double>, ptr %2351, align 64, !tbaa !26, !noalias !88
  %2353 = fneg <8 x double> %2352
  %2354 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2348, <8 x double> %2350, <8 x double> %2353)
  %2355 = getelementptr inbounds nuw i8, ptr %2238, i64 6976
  %2356 = load <8 x double>, ptr %2355, align 64, !tbaa !26, !noalias !88
  %2357 = fadd <8 x double> %2348, %2356
  %2358 = getelementptr inbounds nuw i8, ptr %2238, i64 7360
  %2359 = load <8 x i64>, ptr %2358, align 64, !tbaa !26, !noalias !88
  %2360 = getelementptr inbounds nuw i8, ptr %2238, i64 7712
  %2361 = load ptr, ptr %2360, align 32, !tbaa !82, !noalias !88
  %2362 = load <8 x double>, ptr %2361, align 64, !tbaa !26, !noalias !88
  %2363 = fmul <8 x double> %2348, %2362
  %2364 = icmp eq <8 x i64> %2359, zeroinitializer
  %2365 = select <8 x i1> %2364, <8 x double> %2354, <8 x double> %2363
  %2366 = getelementptr inbounds nuw i8, ptr %2238, i64 7720
  %2367 = load ptr, ptr %2366, align 8, !tbaa !83, !noalias !88
  %2368 = load <8 x double>, ptr %2367, align 64, !tbaa !26, !noalias !88
  %2369 = fsub <8 x double> splat (double 1.000000e+00), %2368
  %2370 = fmul <8 x double> %2348, %2369
  %2371 = select <8 x i1> %2364, <8 x double> %2357, <8 x double> %2370
  %2372 = fneg <8 x double> %2371
  %2373 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2372, <8 x double> %2225, <8 x double> %2365)
  %2374 = fcmp olt <8 x double> %2344, %2278
  %2375 = and <8 x i1> %2245, %2374
  %2376 = fcmp ogt <8 x double> %2345, zeroinitializer
  %2377 = fcmp oge <8 x double> %2373, zeroinitializer
  %2378 = and <8 x i1> %2376, %2377
  %2379 = and <8 x i1> %2375, %2378
  %2380 = sext <8 x i1> %2379 to <8 x i64>
  %2381 = xor <8 x i64> %2380, splat (i64 -1)
  %2382 = fadd <8 x double> %2345, %2373
  %2383 = fcmp ogt <8 x double> %2382, zeroinitializer
  %2384 = select <8 x i1> %2383, <8 x i1> %2375, <8 x i1> zeroinitializer
  %2385 = select <8 x i1> %2384, <8 x i64> %2381, <8 x i64> zeroinitializer
  %2386 = or <8 x i64> %2385, %2380
  %2387 = fmul <8 x double> %2231, %2373
  %2388 = select <8 x i1> %2379, <8 x double> %2387, <8 x double> zeroinitializer
  %2389 = icmp eq <8 x i64> %2386, zeroinitializer
  %2390 = select <8 x i1> %2389, <8 x double> %2271, <8 x double> %2388
  %2391 = select <8 x i1> %2389, <8 x double> %2272, <8 x double> %2225
  %2392 = fsub <8 x double> %2346, %2371
  %2393 = fmul <8 x double> %2231, %2392
  %2394 = select <8 x i1> %2389, <8 x double> %2274, <8 x double> %2393
  %2395 = getelementptr inbounds nuw i8, ptr %2238, i64 5632
  store <8 x double> %2390, ptr %2395, align 64, !tbaa !26, !noalias !88
  %2396 = getelementptr inbounds nuw i8, ptr %2238, i64 5568
  store <8 x double> %2391, ptr %2396, align 64, !tbaa !26, !noalias !88
  %2397 = fmul <8 x double> %2231, %2345
  %2398 = fmul <8 x double> %2231, %2382
  %2399 = icmp eq <8 x i64> %2385, zeroinitializer
  %2400 = select <8 x i1> %2399, <8 x double> zeroinitializer, <8 x double> %2398
  %2401 = select <8 x i1> %2379, <8 x double> %2397, <8 x double> %2400
  %2402 = getelementptr inbounds nuw i8, ptr %2238, i64 5696
  store <8 x double> %2401, ptr %2402, align 64, !tbaa !26, !noalias !88
  %2403 = load i64, ptr %141, align 16, !tbaa !21, !noalias !88
  %2404 = sitofp i64 %2403 to double
  %2405 = insertelement <8 x double> poison, double %2404, i64 0
  %2406 = shufflevector <8 x double> %2405, <8 x double> poison, <8 x i32> zeroinitializer
  %2407 = select <8 x i1> %2389, <8 x double> %2406, <8 x double> %2344
  %2408 = getelementptr inbounds nuw i8, ptr %2238, i64 5760
  store <8 x double> %2407, ptr %2408, align 64, !tbaa !26, !noalias !88
  %2409 = getelementptr inbounds nuw i8, ptr %2238, i64 128
  %2410 = load <8 x double>, ptr %2409, align 64, !tbaa !26, !noalias !88
  %2411 = fadd <8 x double> %2390, %2401
  %2412 = fmul <8 x double> %2410, %2411
  %2413 = fmul <8 x double> %2410, %2394
  %2414 = fadd <8 x double> %2235, %2412
  %2415 = fadd <8 x double> %2234, %2413
  %2416 = add nuw nsw i64 %2236, 1
  %2417 = load i64, ptr %178, align 8, !tbaa !20, !noalias !88
  %2418 = icmp slt i64 %2416, %2417
  br i1 %2418, label %2233, label %2419, !llvm.loop !95

2419:                                             ; preds = %2343, %2190
  %2420 = phi <8 x double> [ zeroinitializer, %2190 ], [ %2414, %2343 ]
  %2421 = phi <8 x double> [ zeroinitializer, %2190 ], [ %2415, %2343 ]
  %2422 = fsub <8 x double> %2196, %2160
  %2423 = fcmp ogt <8 x double> %2422, zeroinitializer
  %2424 = select <8 x i1> %2423, <8 x double> %2422, <8 x double> zeroinitializer
  %2425 = fadd <8 x double> %2225, splat (double 2.731500e+02)
  %2426 = fdiv <8 x double> %2424, splat (double 4.615260e+02)
  %2427 = fadd <8 x double> %2187, %2426
  %2428 = load <8 x double>, ptr %212, align 64, !tbaa !26
  %2429 = fdiv <8 x double> %2427, %2428
  %2430 = fmul <8 x double> %2428, %2429
  %2431 = fdiv <8 x double> %2196, %2430
  %2432 = load <8 x double>, ptr %200, align 64, !tbaa !26, !noalias !96
  %2433 = fsub <8 x double> %2196, %2432
  %2434 = load <8 x double>, ptr %213, align 64, !tbaa !26, !noalias !96
  %2435 = fsub <8 x double> %2433, %2434
  %2436 = load <8 x double>, ptr %214, align 64, !tbaa !26, !noalias !96
  %2437 = load <8 x double>, ptr %160, align 64, !tbaa !26, !noalias !96
  %2438 = fcmp une <8 x double> %2437, splat (double 2.000000e+00)
  %2439 = load <8 x double>, ptr %215, align 64, !tbaa !26, !noalias !96
  %2440 = select <8 x i1> %2438, <8 x double> zeroinitializer, <8 x double> %2439
  %2441 = fadd <8 x double> %2436, %2440
  %2442 = fcmp ule <8 x double> %2433, zeroinitializer
  %2443 = fcmp ule <8 x double> %2441, zeroinitializer
  %2444 = or <8 x i1> %2442, %2443
  %2445 = fmul <8 x double> %2429, splat (double 2.000000e+00)
  %2446 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2445)
  %2447 = fmul <8 x double> %2446, %2441
  %2448 = fadd <8 x double> %2433, splat (double 2.000000e+02)
  %2449 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2448)
  %2450 = select <8 x i1> %2442, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2449
  %2451 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2433, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2452 = fmul <8 x double> %2451, %2447
  %2453 = fmul <8 x double> %2450, %2450
  %2454 = fmul <8 x double> %2450, %2453
  %2455 = fdiv <8 x double> %2452, %2454
  %2456 = fmul <8 x double> %2433, %2447
  %2457 = fdiv <8 x double> %2456, %2450
  %2458 = select <8 x i1> %2444, <8 x double> zeroinitializer, <8 x double> %2457
  %2459 = select <8 x i1> %2444, <8 x double> zeroinitializer, <8 x double> %2455
  %2460 = fcmp ule <8 x double> %2435, zeroinitializer
  %2461 = load <8 x double>, ptr %216, align 64, !tbaa !26, !noalias !96
  %2462 = fmul <8 x double> %2435, %2461
  %2463 = select <8 x i1> %2460, <8 x double> zeroinitializer, <8 x double> %2462
  %2464 = fadd <8 x double> %2463, %2458
  %2465 = select <8 x i1> %2460, <8 x double> zeroinitializer, <8 x double> %2461
  %2466 = fadd <8 x double> %2465, %2459
  %2467 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %2468 = fsub <8 x double> %2432, %2196
  %2469 = fcmp ule <8 x double> %2468, zeroinitializer
  %2470 = fcmp ule <8 x double> %2467, zeroinitializer
  %2471 = or <8 x i1> %2469, %2470
  %2472 = fmul <8 x double> %2189, %2467
  %2473 = fadd <8 x double> %2468, splat (double 2.000000e+02)
  %2474 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2473)
  %2475 = select <8 x i1> %2469, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2474
  %2476 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2468, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2477 = fmul <8 x double> %2476, %2472
  %2478 = fmul <8 x double> %2475, %2475
  %2479 = fmul <8 x double> %2475, %2478
  %2480 = fdiv <8 x double> %2477, %2479
  %2481 = fmul <8 x double> %2468, %2472
  %2482 = fdiv <8 x double> %2481, %2475
  %2483 = load <8 x double>, ptr %185, align 64, !tbaa !26, !noalias !99
  %2484 = load <8 x double>, ptr %202, align 64, !tbaa !26, !noalias !99
  %2485 = load <8 x double>, ptr %186, align 64, !tbaa !26, !noalias !99
  %2486 = load <8 x double>, ptr %203, align 64, !tbaa !26, !noalias !99
  %2487 = fmul <8 x double> %2485, %2486
  %2488 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2483, <8 x double> %2484, <8 x double> %2487)
  %2489 = load <8 x double>, ptr %206, align 64, !tbaa !26, !noalias !99
  %2490 = load <8 x double>, ptr %184, align 64, !tbaa !26, !noalias !99
  %2491 = load <8 x double>, ptr %204, align 64, !tbaa !26, !noalias !99
  %2492 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2489, <8 x double> %2490, <8 x double> %2491)
  %2493 = load <8 x double>, ptr %205, align 64, !tbaa !26, !noalias !99
  %2494 = fneg <8 x double> %2488
  %2495 = fmul <8 x double> %2489, %2494
  %2496 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2491, <8 x double> %2493, <8 x double> %2495)
  %2497 = fdiv <8 x double> %2496, %2492
  %2498 = fcmp ogt <8 x double> %2424, splat (double 2.000000e+03)
  %2499 = select <8 x i1> %2498, <8 x double> %2424, <8 x double> splat (double 2.000000e+03)
  %2500 = fmul <8 x double> %2499, splat (double 0x3EB0C6F7A0B5ED8D)
  %2501 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2500)
  %2502 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2501)
  %2503 = fmul <8 x double> %2502, %2502
  %2504 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2502, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2503)
  %2505 = fadd <8 x double> %2504, splat (double 0x402DD4891DBECC6B)
  %2506 = fmul <8 x double> %2502, splat (double 0x40C77A698FD9BCCA)
  %2507 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2503, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2506)
  %2508 = fadd <8 x double> %2507, splat (double 0xC0B2D7440748F0B3)
  %2509 = fmul <8 x double> %2502, splat (double 0xC148A99584203885)
  %2510 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2503, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2509)
  %2511 = fadd <8 x double> %2510, splat (double 0x4118B9E59F2691E5)
  %2512 = fmul <8 x double> %2511, splat (double 2.000000e+00)
  %2513 = fneg <8 x double> %2508
  %2514 = fmul <8 x double> %2505, splat (double 4.000000e+00)
  %2515 = fneg <8 x double> %2511
  %2516 = fmul <8 x double> %2514, %2515
  %2517 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2508, <8 x double> %2508, <8 x double> %2516)
  %2518 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2517)
  %2519 = fsub <8 x double> %2513, %2518
  %2520 = fdiv <8 x double> %2512, %2519
  %2521 = fadd <8 x double> %2520, splat (double 0x408451671D164BD4)
  %2522 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2520, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2523 = fmul <8 x double> %2522, splat (double -4.000000e+00)
  %2524 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2521, <8 x double> %2521, <8 x double> %2523)
  %2525 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2524)
  %2526 = fsub <8 x double> %2521, %2525
  %2527 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2526, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2528 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2527, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2529 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2527, <8 x double> %2528, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2530 = fadd <8 x double> %2527, splat (double 2.731500e+02)
  %2531 = fcmp ule <8 x double> %2527, %2497
  %2532 = load <8 x double>, ptr %218, align 64, !tbaa !26, !noalias !99
  %2533 = fmul <8 x double> %2492, %2532
  %2534 = fadd <8 x double> %2492, %2532
  %2535 = fdiv <8 x double> %2533, %2534
  %2536 = fdiv <8 x double> %2535, %2529
  %2537 = fmul <8 x double> %2530, splat (double 4.615260e+02)
  %2538 = fmul <8 x double> %2499, %2529
  %2539 = fmul <8 x double> %2527, %2532
  %2540 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2497, <8 x double> %2492, <8 x double> %2539)
  %2541 = fdiv <8 x double> %2540, %2534
  %2542 = select <8 x i1> %2531, <8 x double> %2497, <8 x double> %2541
  store <8 x double> %2542, ptr %208, align 64, !tbaa !26, !noalias !99
  %2543 = fsub <8 x double> %2527, %2497
  %2544 = fmul <8 x double> %2543, %2536
  %2545 = select <8 x i1> %2531, <8 x double> zeroinitializer, <8 x double> %2544
  %2546 = fmul <8 x double> %2425, splat (double 4.615260e+02)
  %2547 = fmul <8 x double> %2425, %2546
  %2548 = fmul <8 x double> %2196, %2227
  %2549 = fdiv <8 x double> %2547, %2548
  %2550 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2490, <8 x double> %2196, <8 x double> %2171)
  %2551 = fsub <8 x double> %2420, %2545
  %2552 = fmul <8 x double> %2551, splat (double -4.615260e+02)
  %2553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2174, <8 x double> %2550, <8 x double> %2552)
  %2554 = fmul <8 x double> %2482, splat (double -2.870530e+02)
  %2555 = select <8 x i1> %2471, <8 x double> splat (double -0.000000e+00), <8 x double> %2554
  %2556 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2431, <8 x double> %2464, <8 x double> %2555)
  %2557 = fadd <8 x double> %2556, %2553
  %2558 = fneg <8 x double> %2530
  %2559 = fmul <8 x double> %2537, %2558
  %2560 = fdiv <8 x double> %2559, %2538
  %2561 = fmul <8 x double> %2560, %2536
  %2562 = select <8 x i1> %2531, <8 x double> splat (double -0.000000e+00), <8 x double> %2561
  %2563 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2421, <8 x double> %2549, <8 x double> %2562)
  %2564 = fmul <8 x double> %2563, splat (double -4.615260e+02)
  %2565 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2174, <8 x double> %2490, <8 x double> %2564)
  %2566 = fmul <8 x double> %2480, splat (double 2.870530e+02)
  %2567 = select <8 x i1> %2471, <8 x double> zeroinitializer, <8 x double> %2566
  %2568 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2431, <8 x double> %2466, <8 x double> %2567)
  %2569 = fadd <8 x double> %2568, %2565
  %2570 = fcmp ule <8 x double> %2557, zeroinitializer
  %2571 = fcmp olt <8 x double> %2193, %2196
  %2572 = select <8 x i1> %2570, <8 x i1> splat (i1 true), <8 x i1> %2571
  %2573 = select <8 x i1> %2572, <8 x double> %2193, <8 x double> %2196
  %2574 = fcmp ogt <8 x double> %2192, %2196
  %2575 = select <8 x i1> %2574, <8 x double> %2192, <8 x double> %2196
  %2576 = select <8 x i1> %2570, <8 x double> %2575, <8 x double> %2192
  %2577 = fdiv <8 x double> %2557, %2569
  %2578 = fsub <8 x double> %2196, %2577
  %2579 = fcmp uge <8 x double> %2576, %2578
  %2580 = fcmp uge <8 x double> %2578, %2573
  %2581 = or <8 x i1> %2579, %2580
  %2582 = fadd <8 x double> %2576, %2573
  %2583 = fmul <8 x double> %2582, splat (double 5.000000e-01)
  %2584 = select <8 x i1> %2581, <8 x double> %2583, <8 x double> %2578
  %2585 = fsub <8 x double> %2584, %2196
  %2586 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2585)
  %2587 = fcmp oge <8 x double> %2586, splat (double 2.000000e-01)
  %2588 = select <8 x i1> %2587, <8 x i64> %2194, <8 x i64> zeroinitializer
  %2589 = icmp eq <8 x i64> %2588, zeroinitializer
  %2590 = select <8 x i1> %2589, <8 x double> %2196, <8 x double> %2584
  %2591 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2588)
  %2592 = icmp ne i64 %2591, 0
  %2593 = add nuw nsw i32 %2195, 1
  %2594 = icmp samesign ult i32 %2195, 59
  %2595 = select i1 %2592, i1 %2594, i1 false
  br i1 %2595, label %2190, label %2596, !llvm.loop !102

2596:                                             ; preds = %2419
  %2597 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2598 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %2599 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2600 = load <8 x double>, ptr %220, align 64, !tbaa !26
  %2601 = fmul <8 x double> %2599, %2600
  %2602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2597, <8 x double> %2598, <8 x double> %2601)
  %2603 = load <8 x double>, ptr %217, align 64, !tbaa !26
  %2604 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %2605 = fsub <8 x double> %2604, %2590
  %2606 = fcmp ule <8 x double> %2605, zeroinitializer
  %2607 = fcmp ule <8 x double> %2603, zeroinitializer
  %2608 = or <8 x i1> %2607, %2606
  %2609 = fmul <8 x double> %2189, %2603
  %2610 = fadd <8 x double> %2605, splat (double 2.000000e+02)
  %2611 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2610)
  %2612 = select <8 x i1> %2606, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2611
  %2613 = fmul <8 x double> %2609, %2605
  %2614 = fdiv <8 x double> %2613, %2612
  %2615 = fmul <8 x double> %2614, splat (double 2.870530e+02)
  %2616 = select <8 x i1> %2608, <8 x double> zeroinitializer, <8 x double> %2615
  %2617 = fdiv <8 x double> %2616, %2174
  %2618 = fsub <8 x double> %2617, %2602
  %2619 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2620 = load <8 x double>, ptr %211, align 64, !tbaa !26
  %2621 = fmul <8 x double> %2429, %2620
  %2622 = fdiv <8 x double> %2464, %2621
  %2623 = fadd <8 x double> %2619, %2622
  %2624 = fdiv <8 x double> %2618, %2623
  %2625 = fcmp ogt <8 x double> %2624, zeroinitializer
  %2626 = select <8 x i1> %2625, <8 x double> %2624, <8 x double> zeroinitializer
  %2627 = fcmp olt <8 x double> %2626, %2590
  %2628 = select <8 x i1> %2627, <8 x double> %2626, <8 x double> %2590
  %2629 = load <8 x double>, ptr %207, align 64, !tbaa !26
  %2630 = select <8 x i1> %2185, <8 x double> %2629, <8 x double> %2628
  store <8 x double> %2630, ptr %207, align 64, !tbaa !26
  %2631 = select <8 x i1> %2185, <8 x double> %2162, <8 x double> %2542
  store <8 x double> %2631, ptr %208, align 64, !tbaa !26
  store <8 x double> %2590, ptr %201, align 64, !tbaa !26
  store <8 x double> %2225, ptr %221, align 64, !tbaa !26
  %2632 = load i64, ptr %178, align 8, !tbaa !20
  br label %2801

2633:                                             ; preds = %2141
  store <8 x double> %2143, ptr %221, align 64, !tbaa !26
  br i1 %1905, label %2634, label %2804

2634:                                             ; preds = %2633
  %2635 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2636 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2143, <8 x double> %2635, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2637 = fdiv <8 x double> splat (double 1.000000e+00), %2636
  %2638 = fadd <8 x double> %2143, splat (double 1.000000e-09)
  br label %2639

2639:                                             ; preds = %2634, %2736
  %2640 = phi i64 [ 0, %2634 ], [ %2798, %2736 ]
  %2641 = load ptr, ptr %151, align 8, !tbaa !28, !noalias !103
  %2642 = getelementptr inbounds nuw %struct.Piece, ptr %2641, i64 %2640
  %2643 = getelementptr inbounds nuw i8, ptr %2642, i64 5824
  %2644 = load <8 x double>, ptr %2643, align 64, !tbaa !26, !noalias !103
  %2645 = getelementptr inbounds nuw i8, ptr %2642, i64 5888
  %2646 = load <8 x double>, ptr %2645, align 64, !tbaa !26, !noalias !103
  %2647 = getelementptr inbounds nuw i8, ptr %2642, i64 7296
  %2648 = load <8 x double>, ptr %2647, align 64, !tbaa !26, !noalias !103
  %2649 = fcmp ule <8 x double> %2648, splat (double 1.000000e+00)
  %2650 = fmul <8 x double> %2143, %2646
  %2651 = fcmp ogt <8 x double> %2644, %2650
  %2652 = and <8 x i1> %2649, %2651
  %2653 = fneg <8 x double> %2646
  %2654 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2653, <8 x double> %2143, <8 x double> %2644)
  %2655 = fmul <8 x double> %2637, %2654
  %2656 = select <8 x i1> %2652, <8 x double> %2655, <8 x double> zeroinitializer
  %2657 = fdiv <8 x double> %2644, %2646
  %2658 = select <8 x i1> %2652, <8 x double> %2143, <8 x double> %2657
  %2659 = getelementptr inbounds nuw i8, ptr %2642, i64 7488
  %2660 = load <8 x i64>, ptr %2659, align 64, !tbaa !26, !noalias !103
  %2661 = getelementptr inbounds nuw i8, ptr %2642, i64 2240
  %2662 = load <8 x double>, ptr %2661, align 64, !tbaa !26, !noalias !103
  %2663 = fcmp ule <8 x double> %2662, zeroinitializer
  %2664 = xor <8 x i1> %2649, splat (i1 true)
  %2665 = select <8 x i1> %2664, <8 x i1> splat (i1 true), <8 x i1> %2663
  %2666 = getelementptr inbounds nuw i8, ptr %2642, i64 5952
  %2667 = load <8 x double>, ptr %2666, align 64, !tbaa !26, !noalias !103
  %2668 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2653, <8 x double> %2667, <8 x double> %2644)
  %2669 = fcmp ogt <8 x double> %2668, zeroinitializer
  %2670 = select <8 x i1> %2669, <8 x double> %2668, <8 x double> zeroinitializer
  %2671 = fmul <8 x double> %2637, %2670
  %2672 = icmp eq <8 x i64> %2660, zeroinitializer
  %2673 = select <8 x i1> %2665, <8 x i1> splat (i1 true), <8 x i1> %2672
  %2674 = select <8 x i1> %2673, <8 x double> %2656, <8 x double> %2671
  %2675 = select <8 x i1> %2673, <8 x double> %2658, <8 x double> %2667
  %2676 = load i64, ptr %141, align 16, !tbaa !21, !noalias !106
  %2677 = sitofp i64 %2676 to double
  %2678 = insertelement <8 x double> poison, double %2677, i64 0
  %2679 = shufflevector <8 x double> %2678, <8 x double> poison, <8 x i32> zeroinitializer
  %2680 = icmp sgt i64 %2676, 0
  br i1 %2680, label %2681, label %2736

2681:                                             ; preds = %2639
  %2682 = getelementptr inbounds nuw i8, ptr %2642, i64 7608
  %2683 = load ptr, ptr %2682, align 8, !tbaa !76, !noalias !106
  %2684 = getelementptr inbounds nuw i8, ptr %2642, i64 7616
  %2685 = load ptr, ptr %2684, align 64, !tbaa !77, !noalias !106
  %2686 = getelementptr inbounds nuw i8, ptr %2642, i64 7552
  %2687 = load i64, ptr %2686, align 64, !tbaa !31, !noalias !106
  %2688 = getelementptr inbounds nuw i8, ptr %2642, i64 7632
  %2689 = getelementptr inbounds nuw i8, ptr %2642, i64 7624
  %2690 = getelementptr inbounds nuw i8, ptr %2642, i64 7640
  br label %2691

2691:                                             ; preds = %2681, %2720
  %2692 = phi <8 x i64> [ splat (i64 -1), %2681 ], [ %2705, %2720 ]
  %2693 = phi i64 [ %2676, %2681 ], [ %2696, %2720 ]
  %2694 = phi <8 x double> [ %2679, %2681 ], [ %2734, %2720 ]
  %2695 = phi <8 x double> [ zeroinitializer, %2681 ], [ %2730, %2720 ]
  %2696 = add nsw i64 %2693, -1
  %2697 = getelementptr inbounds nuw <8 x double>, ptr %2683, i64 %2696
  %2698 = load <8 x double>, ptr %2697, align 64, !tbaa !26, !noalias !106
  %2699 = getelementptr inbounds nuw <8 x double>, ptr %2685, i64 %2696
  %2700 = load <8 x double>, ptr %2699, align 64, !tbaa !26, !noalias !106
  %2701 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2700, <8 x double> %2143, <8 x double> %2698)
  %2702 = fcmp ogt <8 x double> %2701, %2638
  %2703 = select <8 x i1> %2702, <8 x i64> %2692, <8 x i64> zeroinitializer
  %2704 = icmp sgt i64 %2693, %2687
  %2705 = select i1 %2704, <8 x i64> %2703, <8 x i64> zeroinitializer
  %2706 = icmp slt i64 %2693, %2676
  br i1 %2706, label %2707, label %2716

2707:                                             ; preds = %2691
  %2708 = load ptr, ptr %2688, align 16, !tbaa !74, !noalias !106
  %2709 = getelementptr inbounds nuw <8 x double>, ptr %2708, i64 %2693
  %2710 = load <8 x double>, ptr %2709, align 64, !tbaa !26, !noalias !106
  %2711 = fsub <8 x double> %2701, %2143
  %2712 = fmul <8 x double> %2711, %2710
  %2713 = icmp eq <8 x i64> %2705, %2692
  %2714 = select <8 x i1> %2713, <8 x double> zeroinitializer, <8 x double> %2712
  %2715 = fadd <8 x double> %2695, %2714
  br label %2716

2716:                                             ; preds = %2707, %2691
  %2717 = phi <8 x double> [ %2715, %2707 ], [ %2695, %2691 ]
  %2718 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2705)
  %2719 = icmp eq i64 %2718, 0
  br i1 %2719, label %2736, label %2720

2720:                                             ; preds = %2716
  %2721 = load ptr, ptr %2689, align 8, !tbaa !73, !noalias !106
  %2722 = getelementptr inbounds nuw <8 x double>, ptr %2721, i64 %2696
  %2723 = load <8 x double>, ptr %2722, align 64, !tbaa !26, !noalias !106
  %2724 = load ptr, ptr %2690, align 8, !tbaa !75, !noalias !106
  %2725 = getelementptr inbounds nuw <8 x double>, ptr %2724, i64 %2696
  %2726 = load <8 x double>, ptr %2725, align 64, !tbaa !26, !noalias !106
  %2727 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2726, <8 x double> %2143, <8 x double> %2723)
  %2728 = icmp eq <8 x i64> %2705, zeroinitializer
  %2729 = select <8 x i1> %2728, <8 x double> zeroinitializer, <8 x double> %2727
  %2730 = fadd <8 x double> %2717, %2729
  %2731 = uitofp nneg i64 %2696 to double
  %2732 = insertelement <8 x double> poison, double %2731, i64 0
  %2733 = shufflevector <8 x double> %2732, <8 x double> poison, <8 x i32> zeroinitializer
  %2734 = select <8 x i1> %2728, <8 x double> %2694, <8 x double> %2733
  %2735 = icmp samesign ugt i64 %2693, 1
  br i1 %2735, label %2691, label %2736, !llvm.loop !94

2736:                                             ; preds = %2720, %2716, %2639
  %2737 = phi <8 x double> [ %2679, %2639 ], [ %2694, %2716 ], [ %2734, %2720 ]
  %2738 = phi <8 x double> [ zeroinitializer, %2639 ], [ %2717, %2716 ], [ %2730, %2720 ]
  %2739 = getelementptr inbounds nuw i8, ptr %2642, i64 6080
  %2740 = load <8 x double>, ptr %2739, align 64, !tbaa !26, !noalias !103
  %2741 = getelementptr inbounds nuw i8, ptr %2642, i64 5504
  %2742 = load <8 x double>, ptr %2741, align 64, !tbaa !26, !noalias !103
  %2743 = getelementptr inbounds nuw i8, ptr %2642, i64 7040
  %2744 = load <8 x double>, ptr %2743, align 64, !tbaa !26, !noalias !103
  %2745 = fneg <8 x double> %2744
  %2746 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2740, <8 x double> %2742, <8 x double> %2745)
  %2747 = getelementptr inbounds nuw i8, ptr %2642, i64 6976
  %2748 = load <8 x double>, ptr %2747, align 64, !tbaa !26, !noalias !103
  %2749 = fadd <8 x double> %2740, %2748
  %2750 = getelementptr inbounds nuw i8, ptr %2642, i64 7360
  %2751 = load <8 x i64>, ptr %2750, align 64, !tbaa !26, !noalias !103
  %2752 = getelementptr inbounds nuw i8, ptr %2642, i64 7712
  %2753 = load ptr, ptr %2752, align 32, !tbaa !82, !noalias !103
  %2754 = load <8 x double>, ptr %2753, align 64, !tbaa !26, !noalias !103
  %2755 = fmul <8 x double> %2740, %2754
  %2756 = icmp eq <8 x i64> %2751, zeroinitializer
  %2757 = select <8 x i1> %2756, <8 x double> %2746, <8 x double> %2755
  %2758 = getelementptr inbounds nuw i8, ptr %2642, i64 7720
  %2759 = load ptr, ptr %2758, align 8, !tbaa !83, !noalias !103
  %2760 = load <8 x double>, ptr %2759, align 64, !tbaa !26, !noalias !103
  %2761 = fsub <8 x double> splat (double 1.000000e+00), %2760
  %2762 = fmul <8 x double> %2740, %2761
  %2763 = select <8 x i1> %2756, <8 x double> %2749, <8 x double> %2762
  %2764 = fneg <8 x double> %2763
  %2765 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2764, <8 x double> %2143, <8 x double> %2757)
  %2766 = fcmp olt <8 x double> %2737, %2679
  %2767 = and <8 x i1> %2649, %2766
  %2768 = fcmp ogt <8 x double> %2738, zeroinitializer
  %2769 = fcmp oge <8 x double> %2765, zeroinitializer
  %2770 = and <8 x i1> %2768, %2769
  %2771 = and <8 x i1> %2767, %2770
  %2772 = sext <8 x i1> %2771 to <8 x i64>
  %2773 = xor <8 x i64> %2772, splat (i64 -1)
  %2774 = fadd <8 x double> %2738, %2765
  %2775 = fcmp ogt <8 x double> %2774, zeroinitializer
  %2776 = select <8 x i1> %2775, <8 x i1> %2767, <8 x i1> zeroinitializer
  %2777 = select <8 x i1> %2776, <8 x i64> %2773, <8 x i64> zeroinitializer
  %2778 = or <8 x i64> %2777, %2772
  %2779 = fmul <8 x double> %2637, %2765
  %2780 = select <8 x i1> %2771, <8 x double> %2779, <8 x double> zeroinitializer
  %2781 = icmp eq <8 x i64> %2778, zeroinitializer
  %2782 = select <8 x i1> %2781, <8 x double> %2674, <8 x double> %2780
  %2783 = select <8 x i1> %2781, <8 x double> %2675, <8 x double> %2143
  %2784 = getelementptr inbounds nuw i8, ptr %2642, i64 5632
  store <8 x double> %2782, ptr %2784, align 64, !tbaa !26, !noalias !103
  %2785 = getelementptr inbounds nuw i8, ptr %2642, i64 5568
  store <8 x double> %2783, ptr %2785, align 64, !tbaa !26, !noalias !103
  %2786 = fmul <8 x double> %2637, %2738
  %2787 = fmul <8 x double> %2637, %2774
  %2788 = icmp eq <8 x i64> %2777, zeroinitializer
  %2789 = select <8 x i1> %2788, <8 x double> zeroinitializer, <8 x double> %2787
  %2790 = select <8 x i1> %2771, <8 x double> %2786, <8 x double> %2789
  %2791 = getelementptr inbounds nuw i8, ptr %2642, i64 5696
  store <8 x double> %2790, ptr %2791, align 64, !tbaa !26, !noalias !103
  %2792 = load i64, ptr %141, align 16, !tbaa !21, !noalias !103
  %2793 = sitofp i64 %2792 to double
  %2794 = insertelement <8 x double> poison, double %2793, i64 0
  %2795 = shufflevector <8 x double> %2794, <8 x double> poison, <8 x i32> zeroinitializer
  %2796 = select <8 x i1> %2781, <8 x double> %2795, <8 x double> %2737
  %2797 = getelementptr inbounds nuw i8, ptr %2642, i64 5760
  store <8 x double> %2796, ptr %2797, align 64, !tbaa !26, !noalias !103
  %2798 = add nuw nsw i64 %2640, 1
  %2799 = load i64, ptr %178, align 8, !tbaa !20, !noalias !103
  %2800 = icmp slt i64 %2798, %2799
  br i1 %2800, label %2639, label %2801, !llvm.loop !95

2801:                                             ; preds = %2736, %2596
  %2802 = phi i64 [ %2632, %2596 ], [ %2799, %2736 ]
  %2803 = icmp sgt i64 %2802, 0
  br i1 %2803, label %2931, label %2804

2804:                                             ; preds = %2801, %2633
  %2805 = load <8 x double>, ptr %187, align 64, !tbaa !26
  br label %2833

2806:                                             ; preds = %3003
  %2807 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %2808 = icmp sgt i64 %3027, 0
  br i1 %2808, label %2809, label %2833

2809:                                             ; preds = %2806
  %2810 = load ptr, ptr %151, align 8, !tbaa !28
  br label %2811

2811:                                             ; preds = %2809, %2811
  %2812 = phi <8 x double> [ zeroinitializer, %2809 ], [ %2825, %2811 ]
  %2813 = phi <8 x double> [ zeroinitializer, %2809 ], [ %2830, %2811 ]
  %2814 = phi i64 [ 0, %2809 ], [ %2831, %2811 ]
  %2815 = getelementptr inbounds nuw %struct.Piece, ptr %2810, i64 %2814
  %2816 = getelementptr inbounds nuw i8, ptr %2815, i64 7488
  %2817 = load <8 x i64>, ptr %2816, align 64, !tbaa !26
  %2818 = getelementptr inbounds nuw i8, ptr %2815, i64 128
  %2819 = load <8 x double>, ptr %2818, align 64, !tbaa !26
  %2820 = getelementptr inbounds nuw i8, ptr %2815, i64 6336
  %2821 = load <8 x double>, ptr %2820, align 64, !tbaa !26
  %2822 = fmul <8 x double> %2819, %2821
  %2823 = icmp eq <8 x i64> %2817, zeroinitializer
  %2824 = select <8 x i1> %2823, <8 x double> %2822, <8 x double> zeroinitializer
  %2825 = fadd <8 x double> %2812, %2824
  %2826 = getelementptr inbounds nuw i8, ptr %2815, i64 6208
  %2827 = load <8 x double>, ptr %2826, align 64, !tbaa !26
  %2828 = fmul <8 x double> %2819, %2827
  %2829 = select <8 x i1> %2823, <8 x double> %2828, <8 x double> zeroinitializer
  %2830 = fadd <8 x double> %2813, %2829
  %2831 = add nuw nsw i64 %2814, 1
  %2832 = icmp eq i64 %2831, %3027
  br i1 %2832, label %2833, label %2811, !llvm.loop !109

2833:                                             ; preds = %2811, %2804, %2806
  %2834 = phi i1 [ false, %2806 ], [ false, %2804 ], [ true, %2811 ]
  %2835 = phi <8 x double> [ %2807, %2806 ], [ %2805, %2804 ], [ %2807, %2811 ]
  %2836 = phi <8 x double> [ zeroinitializer, %2806 ], [ zeroinitializer, %2804 ], [ %2830, %2811 ]
  %2837 = phi <8 x double> [ zeroinitializer, %2806 ], [ zeroinitializer, %2804 ], [ %2825, %2811 ]
  %2838 = load <8 x double>, ptr %222, align 64, !tbaa !26
  %2839 = load <8 x double>, ptr %205, align 64, !tbaa !26
  %2840 = fsub <8 x double> %2835, %2839
  %2841 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2838, <8 x double> %2840, <8 x double> %2837)
  %2842 = fadd <8 x double> %2836, %2838
  store <8 x double> %2841, ptr %223, align 64, !tbaa !26
  %2843 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %2844 = fcmp ule <8 x double> %2843, zeroinitializer
  %2845 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %2846 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2843, <8 x double> splat (double 5.000000e-01), <8 x double> %2845)
  %2847 = fsub <8 x double> %2846, %2835
  %2848 = fcmp ogt <8 x double> %2843, splat (double 1.000000e-30)
  %2849 = select <8 x i1> %2848, <8 x double> %2843, <8 x double> splat (double 1.000000e-30)
  %2850 = fdiv <8 x double> %2847, %2849
  %2851 = fcmp ogt <8 x double> %2850, zeroinitializer
  %2852 = select <8 x i1> %2851, <8 x double> %2850, <8 x double> zeroinitializer
  %2853 = fcmp olt <8 x double> %2852, splat (double 1.000000e+00)
  %2854 = select <8 x i1> %2853, <8 x double> %2852, <8 x double> splat (double 1.000000e+00)
  %2855 = load <8 x double>, ptr %167, align 64, !tbaa !26
  %2856 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %2857 = icmp eq <8 x i64> %2856, zeroinitializer
  %2858 = select <8 x i1> %2857, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %2859 = select <8 x i1> %2844, <8 x double> %2858, <8 x double> %2854
  %2860 = fmul <8 x double> %2855, %2859
  %2861 = fcmp ule <8 x double> %2860, zeroinitializer
  %2862 = fcmp uge <8 x double> %2860, %2855
  %2863 = or <8 x i1> %2861, %2862
  %2864 = or <8 x i1> %2844, %2863
  %2865 = fdiv <8 x double> %2855, %2849
  %2866 = select <8 x i1> %2864, <8 x double> zeroinitializer, <8 x double> %2865
  %2867 = fadd <8 x double> %2842, %2866
  %2868 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %2869 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %2870 = fdiv <8 x double> splat (double 2.000000e+00), %2869
  %2871 = load <8 x double>, ptr %184, align 64, !tbaa !26
  %2872 = icmp eq <8 x i64> %2868, zeroinitializer
  %2873 = select <8 x i1> %2872, <8 x double> %2871, <8 x double> %2870
  %2874 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %2875 = load <8 x double>, ptr %1, align 64, !tbaa !26
  %2876 = fmul <8 x double> %2874, %2875
  %2877 = load <8 x double>, ptr %169, align 64, !tbaa !26
  %2878 = load <8 x double>, ptr %170, align 64, !tbaa !26
  %2879 = fmul <8 x double> %2878, splat (double 5.000000e-01)
  %2880 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2879, <8 x double> %2874, <8 x double> %2877)
  %2881 = load <8 x double>, ptr %171, align 64, !tbaa !26
  %2882 = fmul <8 x double> %2874, %2881
  %2883 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2876, <8 x double> %2880, <8 x double> %2882)
  %2884 = load <8 x double>, ptr %185, align 64, !tbaa !26
  %2885 = load <8 x double>, ptr %186, align 64, !tbaa !26
  %2886 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %2887 = fmul <8 x double> %2875, %2886
  %2888 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2879, <8 x double> %2886, <8 x double> %2877)
  %2889 = fmul <8 x double> %2881, %2886
  %2890 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2887, <8 x double> %2888, <8 x double> %2889)
  %2891 = fmul <8 x double> %2885, %2890
  %2892 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2884, <8 x double> %2883, <8 x double> %2891)
  %2893 = fmul <8 x double> %2835, %2875
  %2894 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2879, <8 x double> %2835, <8 x double> %2877)
  %2895 = fmul <8 x double> %2835, %2881
  %2896 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2893, <8 x double> %2894, <8 x double> %2895)
  %2897 = fneg <8 x double> %2873
  %2898 = load <8 x double>, ptr %188, align 64, !tbaa !26
  %2899 = fneg <8 x double> %2898
  %2900 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2897, <8 x double> %2883, <8 x double> %2899)
  %2901 = select <8 x i1> %2872, <8 x double> %2892, <8 x double> %2900
  %2902 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2873, <8 x double> %2896, <8 x double> %2901)
  %2903 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2878, <8 x double> %2835, <8 x double> %2877)
  %2904 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2875, <8 x double> %2903, <8 x double> %2881)
  %2905 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %2906 = fcmp une <8 x double> %2905, zeroinitializer
  %2907 = fadd <8 x double> %2841, %2902
  %2908 = fsub <8 x double> %2907, %2860
  %2909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2873, <8 x double> %2904, <8 x double> %2867)
  %2910 = fdiv <8 x double> %2908, %2909
  %2911 = fsub <8 x double> %2835, %2910
  %2912 = select <8 x i1> %2906, <8 x double> %2835, <8 x double> %2911
  store <8 x double> %2912, ptr %187, align 64, !tbaa !26
  %2913 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %2914 = fneg <8 x double> %2884
  %2915 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2914, <8 x double> %2913, <8 x double> %2860)
  %2916 = load <8 x double>, ptr %225, align 64, !tbaa !26
  %2917 = fneg <8 x double> %2885
  %2918 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2917, <8 x double> %2916, <8 x double> %2915)
  %2919 = fdiv <8 x double> %2918, %2871
  %2920 = load <8 x double>, ptr %226, align 64, !tbaa !26
  %2921 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2914, <8 x double> %2920, <8 x double> %2841)
  %2922 = load <8 x double>, ptr %227, align 64, !tbaa !26
  %2923 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2917, <8 x double> %2922, <8 x double> %2921)
  %2924 = fdiv <8 x double> %2923, %2871
  %2925 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2860, <8 x double> %2869, <8 x double> %2913)
  %2926 = select <8 x i1> %2872, <8 x double> %2919, <8 x double> %2925
  %2927 = load <8 x double>, ptr %228, align 64, !tbaa !26
  %2928 = select <8 x i1> %2906, <8 x double> %2927, <8 x double> %2926
  store <8 x double> %2928, ptr %228, align 64, !tbaa !26
  %2929 = load <8 x double>, ptr %229, align 64, !tbaa !26
  %2930 = select <8 x i1> %2906, <8 x double> %2929, <8 x double> %2924
  store <8 x double> %2930, ptr %229, align 64, !tbaa !26
  br i1 %2834, label %3029, label %3292

2931:                                             ; preds = %2801, %3003
  %2932 = phi i64 [ %3026, %3003 ], [ 0, %2801 ]
  %2933 = load ptr, ptr %151, align 8, !tbaa !28
  %2934 = getelementptr inbounds nuw %struct.Piece, ptr %2933, i64 %2932
  %2935 = getelementptr inbounds nuw i8, ptr %2934, i64 5568
  %2936 = load <8 x double>, ptr %2935, align 64, !tbaa !26
  %2937 = getelementptr inbounds nuw i8, ptr %2934, i64 5760
  %2938 = load <8 x double>, ptr %2937, align 64, !tbaa !26
  %2939 = getelementptr inbounds nuw i8, ptr %2934, i64 7608
  %2940 = load ptr, ptr %2939, align 8, !tbaa !76
  %2941 = getelementptr inbounds nuw i8, ptr %2934, i64 7616
  %2942 = load ptr, ptr %2941, align 64, !tbaa !77
  %2943 = getelementptr inbounds nuw i8, ptr %2934, i64 7560
  %2944 = load ptr, ptr %2943, align 8, !tbaa !58
  %2945 = load i64, ptr %141, align 16, !tbaa !21
  %2946 = icmp sgt i64 %2945, 0
  br i1 %2946, label %2962, label %2947

2947:                                             ; preds = %2962, %2931
  %2948 = getelementptr inbounds nuw i8, ptr %2934, i64 7360
  %2949 = load <8 x i64>, ptr %2948, align 64, !tbaa !26
  %2950 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2949)
  %2951 = icmp eq i64 %2950, 0
  %2952 = load i64, ptr %142, align 8, !tbaa !22
  %2953 = icmp sgt i64 %2952, 0
  br i1 %2951, label %2959, label %2954

2954:                                             ; preds = %2947
  br i1 %2953, label %2955, label %3003

2955:                                             ; preds = %2954
  %2956 = getelementptr inbounds nuw i8, ptr %2934, i64 7712
  %2957 = getelementptr inbounds nuw i8, ptr %2934, i64 7720
  %2958 = getelementptr inbounds nuw i8, ptr %2934, i64 7680
  br label %2978

2959:                                             ; preds = %2947
  br i1 %2953, label %2960, label %3003

2960:                                             ; preds = %2959
  %2961 = getelementptr inbounds nuw i8, ptr %2934, i64 7680
  br label %2996

2962:                                             ; preds = %2931, %2962
  %2963 = phi <8 x double> [ %2975, %2962 ], [ %2936, %2931 ]
  %2964 = phi i64 [ %2965, %2962 ], [ %2945, %2931 ]
  %2965 = add nsw i64 %2964, -1
  %2966 = uitofp nneg i64 %2965 to double
  %2967 = insertelement <8 x double> poison, double %2966, i64 0
  %2968 = shufflevector <8 x double> %2967, <8 x double> poison, <8 x i32> zeroinitializer
  %2969 = fcmp ugt <8 x double> %2938, %2968
  %2970 = getelementptr inbounds nuw <8 x double>, ptr %2940, i64 %2965
  %2971 = load <8 x double>, ptr %2970, align 64, !tbaa !26
  %2972 = getelementptr inbounds nuw <8 x double>, ptr %2942, i64 %2965
  %2973 = load <8 x double>, ptr %2972, align 64, !tbaa !26
  %2974 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2973, <8 x double> %2963, <8 x double> %2971)
  %2975 = select <8 x i1> %2969, <8 x double> %2974, <8 x double> %2936
  %2976 = getelementptr inbounds nuw <8 x double>, ptr %2944, i64 %2965
  store <8 x double> %2975, ptr %2976, align 64, !tbaa !26
  %2977 = icmp samesign ugt i64 %2964, 1
  br i1 %2977, label %2962, label %2947, !llvm.loop !110

2978:                                             ; preds = %2955, %2978
  %2979 = phi i64 [ 0, %2955 ], [ %2993, %2978 ]
  %2980 = phi <8 x double> [ %2936, %2955 ], [ %2990, %2978 ]
  %2981 = load <8 x i64>, ptr %2948, align 64, !tbaa !26
  %2982 = load ptr, ptr %2956, align 32, !tbaa !82
  %2983 = getelementptr inbounds nuw <8 x double>, ptr %2982, i64 %2979
  %2984 = load <8 x double>, ptr %2983, align 64, !tbaa !26
  %2985 = load ptr, ptr %2957, align 8, !tbaa !83
  %2986 = getelementptr inbounds nuw <8 x double>, ptr %2985, i64 %2979
  %2987 = load <8 x double>, ptr %2986, align 64, !tbaa !26
  %2988 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2987, <8 x double> %2980, <8 x double> %2984)
  %2989 = icmp eq <8 x i64> %2981, zeroinitializer
  %2990 = select <8 x i1> %2989, <8 x double> %2936, <8 x double> %2988
  %2991 = load ptr, ptr %2958, align 64, !tbaa !111
  %2992 = getelementptr inbounds nuw <8 x double>, ptr %2991, i64 %2979
  store <8 x double> %2990, ptr %2992, align 64, !tbaa !26
  %2993 = add nuw nsw i64 %2979, 1
  %2994 = load i64, ptr %142, align 8, !tbaa !22
  %2995 = icmp slt i64 %2993, %2994
  br i1 %2995, label %2978, label %3003, !llvm.loop !112

2996:                                             ; preds = %2960, %2996
  %2997 = phi i64 [ 0, %2960 ], [ %3000, %2996 ]
  %2998 = load ptr, ptr %2961, align 64, !tbaa !111
  %2999 = getelementptr inbounds nuw <8 x double>, ptr %2998, i64 %2997
  store <8 x double> %2936, ptr %2999, align 64, !tbaa !26
  %3000 = add nuw nsw i64 %2997, 1
  %3001 = load i64, ptr %142, align 8, !tbaa !22
  %3002 = icmp slt i64 %3000, %3001
  br i1 %3002, label %2996, label %3003, !llvm.loop !113

3003:                                             ; preds = %2978, %2996, %2954, %2959
  %3004 = phi <8 x double> [ %2936, %2959 ], [ %2936, %2954 ], [ %2936, %2996 ], [ %2990, %2978 ]
  %3005 = load <8 x i64>, ptr %2948, align 64, !tbaa !26
  %3006 = getelementptr inbounds nuw i8, ptr %2934, i64 6272
  %3007 = load <8 x double>, ptr %3006, align 64, !tbaa !26
  %3008 = icmp eq <8 x i64> %3005, zeroinitializer
  %3009 = select <8 x i1> %3008, <8 x double> zeroinitializer, <8 x double> %3007
  %3010 = fsub <8 x double> splat (double 1.000000e+00), %3009
  %3011 = getelementptr inbounds nuw i8, ptr %2934, i64 5504
  %3012 = load <8 x double>, ptr %3011, align 64, !tbaa !26
  %3013 = fmul <8 x double> %3009, %3012
  %3014 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3010, <8 x double> %3004, <8 x double> %3013)
  %3015 = getelementptr inbounds nuw i8, ptr %2934, i64 6464
  store <8 x double> %3014, ptr %3015, align 64, !tbaa !26
  %3016 = getelementptr inbounds nuw i8, ptr %2934, i64 6208
  %3017 = load <8 x double>, ptr %3016, align 64, !tbaa !26
  %3018 = fsub <8 x double> %3012, %3004
  %3019 = fmul <8 x double> %3018, %3017
  %3020 = getelementptr inbounds nuw i8, ptr %2934, i64 6336
  store <8 x double> %3019, ptr %3020, align 64, !tbaa !26
  %3021 = getelementptr inbounds nuw i8, ptr %2934, i64 3200
  %3022 = load <8 x double>, ptr %3021, align 64, !tbaa !26
  %3023 = fdiv <8 x double> %3019, %3022
  %3024 = fsub <8 x double> %3012, %3023
  %3025 = getelementptr inbounds nuw i8, ptr %2934, i64 6400
  store <8 x double> %3024, ptr %3025, align 64, !tbaa !26
  %3026 = add nuw nsw i64 %2932, 1
  %3027 = load i64, ptr %178, align 8, !tbaa !20
  %3028 = icmp slt i64 %3026, %3027
  br i1 %3028, label %2931, label %2806, !llvm.loop !114

3029:                                             ; preds = %2833, %3247
  %3030 = phi i64 [ %3289, %3247 ], [ 0, %2833 ]
  %3031 = phi <8 x double> [ %3288, %3247 ], [ zeroinitializer, %2833 ]
  %3032 = load ptr, ptr %151, align 8, !tbaa !28
  %3033 = getelementptr inbounds nuw %struct.Piece, ptr %3032, i64 %3030
  %3034 = getelementptr inbounds nuw i8, ptr %3033, i64 5632
  %3035 = load <8 x double>, ptr %3034, align 64, !tbaa !26
  %3036 = getelementptr inbounds nuw i8, ptr %3033, i64 5696
  %3037 = load <8 x double>, ptr %3036, align 64, !tbaa !26
  %3038 = fadd <8 x double> %3035, %3037
  %3039 = getelementptr inbounds nuw i8, ptr %3033, i64 5568
  %3040 = load <8 x double>, ptr %3039, align 64, !tbaa !26
  %3041 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %3042 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3041, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %3043 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3041, <8 x double> %3042, <8 x double> splat (double 0x4142F8368A3D70A4))
  %3044 = getelementptr inbounds nuw i8, ptr %3033, i64 5312
  %3045 = load <8 x double>, ptr %3044, align 64, !tbaa !26
  %3046 = getelementptr inbounds nuw i8, ptr %3033, i64 4032
  %3047 = load <8 x double>, ptr %3046, align 64, !tbaa !26
  %3048 = fneg <8 x double> %3045
  %3049 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3048, <8 x double> %3047, <8 x double> %3038)
  %3050 = getelementptr inbounds nuw i8, ptr %3033, i64 5376
  %3051 = load <8 x double>, ptr %3050, align 64, !tbaa !26
  %3052 = getelementptr inbounds nuw i8, ptr %3033, i64 4800
  %3053 = load <8 x double>, ptr %3052, align 64, !tbaa !26
  %3054 = fneg <8 x double> %3051
  %3055 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> %3053, <8 x double> %3049)
  %3056 = getelementptr inbounds nuw i8, ptr %3033, i64 5248
  %3057 = load <8 x double>, ptr %3056, align 64, !tbaa !26
  %3058 = fdiv <8 x double> %3055, %3057
  %3059 = getelementptr inbounds nuw i8, ptr %3033, i64 1600
  %3060 = load <8 x double>, ptr %3059, align 64, !tbaa !26
  %3061 = fsub <8 x double> %3060, %3058
  %3062 = getelementptr inbounds nuw i8, ptr %3033, i64 3904
  %3063 = load <8 x double>, ptr %3062, align 64, !tbaa !26
  %3064 = getelementptr inbounds nuw i8, ptr %3033, i64 7168
  %3065 = load <8 x double>, ptr %3064, align 64, !tbaa !26
  %3066 = fsub <8 x double> %3063, %3065
  %3067 = getelementptr inbounds nuw i8, ptr %3033, i64 6784
  %3068 = load <8 x double>, ptr %3067, align 64, !tbaa !26
  %3069 = getelementptr inbounds nuw i8, ptr %3033, i64 1280
  %3070 = load <8 x double>, ptr %3069, align 64, !tbaa !26
  %3071 = fmul <8 x double> %3068, %3070
  %3072 = getelementptr inbounds nuw i8, ptr %3033, i64 6464
  %3073 = load <8 x double>, ptr %3072, align 64, !tbaa !26
  %3074 = fsub <8 x double> %3073, %3040
  %3075 = fmul <8 x double> %3071, %3074
  %3076 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3043, <8 x double> %3038, <8 x double> %3075)
  %3077 = fsub <8 x double> %3061, %3066
  %3078 = getelementptr inbounds nuw i8, ptr %3033, i64 2944
  %3079 = getelementptr inbounds nuw i8, ptr %3033, i64 3072
  %3080 = load <8 x double>, ptr %3079, align 64, !tbaa !26
  %3081 = fsub <8 x double> %3077, %3080
  %3082 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3081)
  %3083 = getelementptr inbounds nuw i8, ptr %3033, i64 832
  %3084 = load <8 x double>, ptr %3083, align 64, !tbaa !26
  %3085 = fdiv <8 x double> %3082, %3084
  %3086 = getelementptr inbounds nuw i8, ptr %3033, i64 7360
  %3087 = load <8 x i64>, ptr %3086, align 64, !tbaa !26
  %3088 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3087)
  %3089 = icmp eq i64 %3088, 0
  br i1 %3089, label %3247, label %3090

3090:                                             ; preds = %3029
  %3091 = getelementptr inbounds nuw i8, ptr %3033, i64 3776
  %3092 = load <8 x double>, ptr %3091, align 64, !tbaa !26
  %3093 = fcmp ogt <8 x double> %3066, %3061
  %3094 = getelementptr inbounds nuw i8, ptr %3033, i64 7296
  %3095 = load <8 x double>, ptr %3094, align 64, !tbaa !26
  %3096 = fcmp oeq <8 x double> %3095, zeroinitializer
  %3097 = select <8 x i1> %3096, <8 x i1> %3093, <8 x i1> zeroinitializer
  %3098 = select <8 x i1> %3097, <8 x i64> %3087, <8 x i64> zeroinitializer
  %3099 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3098)
  %3100 = icmp eq i64 %3099, 0
  br i1 %3100, label %3171, label %3101

3101:                                             ; preds = %3090
  %3102 = fsub <8 x double> %3066, %3061
  %3103 = fdiv <8 x double> %3102, %3084
  %3104 = getelementptr inbounds nuw i8, ptr %3033, i64 7592
  %3105 = load ptr, ptr %3104, align 8, !tbaa !65
  %3106 = load i64, ptr %141, align 16, !tbaa !21
  %3107 = add nsw i64 %3106, -1
  %3108 = getelementptr inbounds <8 x double>, ptr %3105, i64 %3107
  %3109 = load <8 x double>, ptr %3108, align 64, !tbaa !26
  %3110 = icmp sgt i64 %3106, 1
  br i1 %3110, label %3111, label %3163

3111:                                             ; preds = %3101
  %3112 = getelementptr inbounds nuw i8, ptr %3033, i64 7552
  %3113 = load i64, ptr %3112, align 64, !tbaa !31
  %3114 = getelementptr inbounds nuw i8, ptr %3033, i64 4416
  %3115 = getelementptr inbounds nuw i8, ptr %3033, i64 1536
  %3116 = getelementptr inbounds nuw i8, ptr %3033, i64 7648
  br label %3117

3117:                                             ; preds = %3111, %3160
  %3118 = phi <8 x double> [ %3092, %3111 ], [ %3155, %3160 ]
  %3119 = phi i64 [ %3107, %3111 ], [ %3161, %3160 ]
  %3120 = phi <8 x double> [ %3109, %3111 ], [ %3143, %3160 ]
  %3121 = phi <8 x i64> [ %3098, %3111 ], [ %3147, %3160 ]
  %3122 = phi <8 x double> [ %3103, %3111 ], [ %3154, %3160 ]
  %3123 = icmp slt i64 %3119, %3113
  br i1 %3123, label %3124, label %3130

3124:                                             ; preds = %3117
  %3125 = load ptr, ptr %3116, align 32, !tbaa !72
  %3126 = getelementptr inbounds nuw <8 x double>, ptr %3125, i64 %3119
  %3127 = load <8 x double>, ptr %3126, align 64, !tbaa !26
  %3128 = load <8 x double>, ptr %3115, align 64, !tbaa !26
  %3129 = fmul <8 x double> %3127, %3128
  br label %3138

3130:                                             ; preds = %3117
  %3131 = load <8 x double>, ptr %3114, align 64, !tbaa !26
  %3132 = load <8 x double>, ptr %3115, align 64, !tbaa !26
  %3133 = load ptr, ptr %3116, align 32, !tbaa !72
  %3134 = getelementptr inbounds nuw <8 x double>, ptr %3133, i64 %3119
  %3135 = load <8 x double>, ptr %3134, align 64, !tbaa !26
  %3136 = fsub <8 x double> %3131, %3132
  %3137 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3135, <8 x double> %3136, <8 x double> %3132)
  br label %3138

3138:                                             ; preds = %3124, %3130
  %3139 = phi <8 x double> [ %3129, %3124 ], [ %3137, %3130 ]
  %3140 = getelementptr inbounds nuw <8 x double>, ptr %3105, i64 %3119
  %3141 = load <8 x double>, ptr %3140, align 64, !tbaa !26
  %3142 = icmp eq <8 x i64> %3121, zeroinitializer
  %3143 = select <8 x i1> %3142, <8 x double> %3120, <8 x double> %3141
  %3144 = fsub <8 x double> %3118, %3139
  %3145 = fmul <8 x double> %3144, %3143
  %3146 = fcmp olt <8 x double> %3145, %3122
  %3147 = select <8 x i1> %3146, <8 x i64> %3121, <8 x i64> zeroinitializer
  %3148 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3147)
  %3149 = icmp eq i64 %3148, 0
  br i1 %3149, label %3163, label %3150

3150:                                             ; preds = %3138
  %3151 = fneg <8 x double> %3143
  %3152 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3151, <8 x double> %3144, <8 x double> %3122)
  %3153 = icmp eq <8 x i64> %3147, zeroinitializer
  %3154 = select <8 x i1> %3153, <8 x double> %3122, <8 x double> %3152
  %3155 = select <8 x i1> %3153, <8 x double> %3118, <8 x double> %3139
  %3156 = icmp eq i64 %3119, 1
  br i1 %3156, label %3157, label %3160

3157:                                             ; preds = %3150
  %3158 = load <8 x double>, ptr %3105, align 64, !tbaa !26
  %3159 = select <8 x i1> %3153, <8 x double> %3143, <8 x double> %3158
  br label %3163

3160:                                             ; preds = %3150
  %3161 = add nsw i64 %3119, -1
  %3162 = icmp sgt i64 %3119, 1
  br i1 %3162, label %3117, label %3163, !llvm.loop !115

3163:                                             ; preds = %3160, %3138, %3157, %3101
  %3164 = phi <8 x double> [ %3103, %3101 ], [ %3154, %3157 ], [ %3122, %3138 ], [ %3154, %3160 ]
  %3165 = phi <8 x double> [ %3092, %3101 ], [ %3155, %3157 ], [ %3118, %3138 ], [ %3155, %3160 ]
  %3166 = phi <8 x double> [ %3109, %3101 ], [ %3159, %3157 ], [ %3143, %3138 ], [ %3143, %3160 ]
  %3167 = fdiv <8 x double> %3164, %3166
  %3168 = fsub <8 x double> %3165, %3167
  %3169 = icmp eq <8 x i64> %3098, zeroinitializer
  %3170 = select <8 x i1> %3169, <8 x double> %3092, <8 x double> %3168
  br label %3171

3171:                                             ; preds = %3163, %3090
  %3172 = phi <8 x double> [ %3170, %3163 ], [ %3092, %3090 ]
  %3173 = load <8 x double>, ptr %3078, align 64, !tbaa !26
  %3174 = getelementptr inbounds nuw i8, ptr %3033, i64 2560
  %3175 = load <8 x double>, ptr %3174, align 64, !tbaa !26
  %3176 = getelementptr inbounds nuw i8, ptr %3033, i64 2624
  %3177 = load <8 x double>, ptr %3176, align 64, !tbaa !26
  %3178 = getelementptr inbounds nuw i8, ptr %3033, i64 2688
  %3179 = load <8 x double>, ptr %3178, align 64, !tbaa !26
  %3180 = getelementptr inbounds nuw i8, ptr %3033, i64 2752
  %3181 = load <8 x double>, ptr %3180, align 64, !tbaa !26
  %3182 = load <8 x double>, ptr %3033, align 64, !tbaa !26
  %3183 = fmul <8 x double> %3182, splat (double 1.000000e-09)
  br label %3184

3184:                                             ; preds = %3171, %3184
  %3185 = phi <8 x i64> [ splat (i64 -1), %3171 ], [ %3202, %3184 ]
  %3186 = phi i32 [ 0, %3171 ], [ %3203, %3184 ]
  %3187 = phi <8 x double> [ %3173, %3171 ], [ %3199, %3184 ]
  %3188 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3187, <8 x double> %3181, <8 x double> %3179)
  %3189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3187, <8 x double> %3188, <8 x double> %3177)
  %3190 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3187, <8 x double> %3189, <8 x double> %3175)
  %3191 = fsub <8 x double> %3190, %3172
  %3192 = fmul <8 x double> %3187, splat (double 3.000000e+00)
  %3193 = fmul <8 x double> %3192, %3181
  %3194 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3179, <8 x double> splat (double 2.000000e+00), <8 x double> %3193)
  %3195 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3187, <8 x double> %3194, <8 x double> %3177)
  %3196 = fdiv <8 x double> %3191, %3195
  %3197 = fsub <8 x double> %3187, %3196
  %3198 = icmp eq <8 x i64> %3185, zeroinitializer
  %3199 = select <8 x i1> %3198, <8 x double> %3187, <8 x double> %3197
  %3200 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3196)
  %3201 = fcmp oge <8 x double> %3200, %3183
  %3202 = select <8 x i1> %3201, <8 x i64> %3185, <8 x i64> zeroinitializer
  %3203 = add nuw nsw i32 %3186, 1
  %3204 = icmp samesign ult i32 %3186, 3
  %3205 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3202)
  %3206 = icmp ne i64 %3205, 0
  %3207 = select i1 %3204, i1 %3206, i1 false
  br i1 %3207, label %3184, label %3208, !llvm.loop !116

3208:                                             ; preds = %3184
  %3209 = fmul <8 x double> %3182, splat (double 2.800000e-01)
  %3210 = fcmp ogt <8 x double> %3199, %3209
  %3211 = select <8 x i1> %3210, <8 x double> %3199, <8 x double> %3209
  %3212 = fcmp olt <8 x double> %3211, %3182
  %3213 = select <8 x i1> %3212, <8 x double> %3211, <8 x double> %3182
  %3214 = fcmp olt <8 x double> %3066, %3061
  %3215 = icmp eq <8 x i64> %3087, zeroinitializer
  %3216 = select <8 x i1> %3215, <8 x i1> splat (i1 true), <8 x i1> %3214
  %3217 = select <8 x i1> %3216, <8 x double> %3066, <8 x double> %3061
  %3218 = fsub <8 x double> %3213, %3173
  %3219 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3218)
  %3220 = select <8 x i1> %3215, <8 x double> %3085, <8 x double> %3219
  %3221 = select <8 x i1> %3215, <8 x double> %3173, <8 x double> %3213
  store <8 x double> %3221, ptr %3078, align 64, !tbaa !26
  %3222 = getelementptr inbounds nuw i8, ptr %3033, i64 3008
  %3223 = load <8 x double>, ptr %3222, align 64, !tbaa !26
  %3224 = select <8 x i1> %3215, <8 x double> %3223, <8 x double> %3172
  store <8 x double> %3224, ptr %3222, align 64, !tbaa !26
  %3225 = getelementptr inbounds nuw i8, ptr %3033, i64 6720
  %3226 = load <8 x double>, ptr %3225, align 64, !tbaa !26
  %3227 = fmul <8 x double> %3226, splat (double 2.000000e+00)
  %3228 = getelementptr inbounds nuw i8, ptr %3033, i64 384
  %3229 = load <8 x double>, ptr %3228, align 64, !tbaa !26
  %3230 = getelementptr inbounds nuw i8, ptr %3033, i64 448
  %3231 = load <8 x double>, ptr %3230, align 64, !tbaa !26
  %3232 = getelementptr inbounds nuw i8, ptr %3033, i64 512
  %3233 = load <8 x double>, ptr %3232, align 64, !tbaa !26
  %3234 = fmul <8 x double> %3040, %3233
  %3235 = fmul <8 x double> %3234, splat (double 0x3FD5555555555555)
  %3236 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3231, <8 x double> splat (double 5.000000e-01), <8 x double> %3235)
  %3237 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3040, <8 x double> %3236, <8 x double> %3229)
  %3238 = fmul <8 x double> %3040, %3237
  %3239 = getelementptr inbounds nuw i8, ptr %3033, i64 768
  %3240 = load <8 x double>, ptr %3239, align 64, !tbaa !26
  %3241 = fneg <8 x double> %3240
  %3242 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3241, <8 x double> %3040, <8 x double> %3238)
  %3243 = fmul <8 x double> %3227, %3242
  %3244 = fsub <8 x double> %3076, %3243
  %3245 = select <8 x i1> %3215, <8 x double> %3076, <8 x double> %3244
  %3246 = fsub <8 x double> %3061, %3217
  br label %3247

3247:                                             ; preds = %3029, %3208
  %3248 = phi <8 x double> [ %3077, %3029 ], [ %3246, %3208 ]
  %3249 = phi <8 x double> [ %3085, %3029 ], [ %3220, %3208 ]
  %3250 = phi <8 x double> [ %3066, %3029 ], [ %3217, %3208 ]
  %3251 = phi <8 x double> [ %3076, %3029 ], [ %3245, %3208 ]
  store <8 x double> %3248, ptr %3079, align 64, !tbaa !26
  %3252 = getelementptr inbounds nuw i8, ptr %3033, i64 3136
  store <8 x double> %3250, ptr %3252, align 64, !tbaa !26
  %3253 = getelementptr inbounds nuw i8, ptr %3033, i64 3264
  store <8 x double> %3058, ptr %3253, align 64, !tbaa !26
  %3254 = getelementptr inbounds nuw i8, ptr %3033, i64 3456
  store <8 x double> %3035, ptr %3254, align 64, !tbaa !26
  %3255 = getelementptr inbounds nuw i8, ptr %3033, i64 3520
  store <8 x double> %3040, ptr %3255, align 64, !tbaa !26
  %3256 = getelementptr inbounds nuw i8, ptr %3033, i64 6976
  %3257 = load <8 x double>, ptr %3256, align 64, !tbaa !26
  %3258 = getelementptr inbounds nuw i8, ptr %3033, i64 7040
  %3259 = load <8 x double>, ptr %3258, align 64, !tbaa !26
  %3260 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3257, <8 x double> %3040, <8 x double> %3259)
  %3261 = getelementptr inbounds nuw i8, ptr %3033, i64 6336
  %3262 = load <8 x double>, ptr %3261, align 64, !tbaa !26
  %3263 = getelementptr inbounds nuw i8, ptr %3033, i64 4096
  %3264 = load <8 x double>, ptr %3263, align 64, !tbaa !26
  %3265 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3048, <8 x double> %3264, <8 x double> %3262)
  %3266 = getelementptr inbounds nuw i8, ptr %3033, i64 4864
  %3267 = load <8 x double>, ptr %3266, align 64, !tbaa !26
  %3268 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> %3267, <8 x double> %3265)
  %3269 = fdiv <8 x double> %3268, %3057
  %3270 = getelementptr inbounds nuw i8, ptr %3033, i64 3328
  store <8 x double> %3269, ptr %3270, align 64, !tbaa !26
  %3271 = getelementptr inbounds nuw i8, ptr %3033, i64 4160
  %3272 = load <8 x double>, ptr %3271, align 64, !tbaa !26
  %3273 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3048, <8 x double> %3272, <8 x double> %3251)
  %3274 = getelementptr inbounds nuw i8, ptr %3033, i64 4928
  %3275 = load <8 x double>, ptr %3274, align 64, !tbaa !26
  %3276 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> %3275, <8 x double> %3273)
  %3277 = fdiv <8 x double> %3276, %3057
  %3278 = getelementptr inbounds nuw i8, ptr %3033, i64 3392
  store <8 x double> %3277, ptr %3278, align 64, !tbaa !26
  %3279 = getelementptr inbounds nuw i8, ptr %3033, i64 4352
  %3280 = load <8 x double>, ptr %3279, align 64, !tbaa !26
  %3281 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3048, <8 x double> %3280, <8 x double> %3260)
  %3282 = getelementptr inbounds nuw i8, ptr %3033, i64 5120
  %3283 = load <8 x double>, ptr %3282, align 64, !tbaa !26
  %3284 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> %3283, <8 x double> %3281)
  %3285 = fdiv <8 x double> %3284, %3057
  %3286 = getelementptr inbounds nuw i8, ptr %3033, i64 3584
  store <8 x double> %3285, ptr %3286, align 64, !tbaa !26
  %3287 = fcmp ogt <8 x double> %3031, %3249
  %3288 = select <8 x i1> %3287, <8 x double> %3031, <8 x double> %3249
  %3289 = add nuw nsw i64 %3030, 1
  %3290 = load i64, ptr %178, align 8, !tbaa !20
  %3291 = icmp slt i64 %3289, %3290
  br i1 %3291, label %3029, label %3292, !llvm.loop !117

3292:                                             ; preds = %3247, %2833
  %3293 = phi <8 x double> [ zeroinitializer, %2833 ], [ %3288, %3247 ]
  %3294 = load <8 x double>, ptr %193, align 64, !tbaa !26
  %3295 = fadd <8 x double> %3294, splat (double 1.000000e+00)
  store <8 x double> %3295, ptr %193, align 64, !tbaa !26
  %3296 = load <8 x i64>, ptr %132, align 64, !tbaa !26
  %3297 = load <8 x double>, ptr %230, align 64, !tbaa !26
  %3298 = fcmp olt <8 x double> %3293, %3297
  %3299 = load i64, ptr %231, align 32, !tbaa !24
  %3300 = sitofp i64 %3299 to double
  %3301 = insertelement <8 x double> poison, double %3300, i64 0
  %3302 = shufflevector <8 x double> %3301, <8 x double> poison, <8 x i32> zeroinitializer
  %3303 = fcmp oge <8 x double> %3295, %3302
  %3304 = or <8 x i1> %3298, %3303
  %3305 = select <8 x i1> %3304, <8 x i64> %3296, <8 x i64> zeroinitializer
  store <8 x i64> %3305, ptr %155, align 64, !tbaa !26
  %3306 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3305)
  %3307 = icmp eq i64 %3306, 0
  br i1 %3307, label %549, label %3308, !llvm.loop !55

3308:                                             ; preds = %3292
  %3309 = load i64, ptr %178, align 8, !tbaa !20
  %3310 = icmp sgt i64 %3309, 0
  br i1 %3310, label %3311, label %3313

3311:                                             ; preds = %3308
  %3312 = icmp eq <8 x i64> %3305, zeroinitializer
  br label %3618

3313:                                             ; preds = %3666, %3308
  %3314 = phi i64 [ %3309, %3308 ], [ %3672, %3666 ]
  %3315 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %3316 = fadd <8 x double> %3315, splat (double 1.000000e+00)
  %3317 = icmp eq <8 x i64> %3305, zeroinitializer
  %3318 = select <8 x i1> %3317, <8 x double> %3315, <8 x double> %3316
  store <8 x double> %3318, ptr %183, align 64, !tbaa !26
  %3319 = fcmp ogt <8 x double> %3318, splat (double 4.000000e+01)
  %3320 = select <8 x i1> %3319, <8 x i64> %3305, <8 x i64> zeroinitializer
  %3321 = xor <8 x i64> %3320, %3305
  %3322 = load <8 x double>, ptr %149, align 64, !tbaa !26
  %3323 = fadd <8 x double> %3322, splat (double 1.000000e+00)
  %3324 = icmp eq <8 x i64> %3320, zeroinitializer
  %3325 = select <8 x i1> %3324, <8 x double> %3322, <8 x double> %3323
  store <8 x double> %3325, ptr %149, align 64, !tbaa !26
  %3326 = load <8 x double>, ptr %221, align 64, !tbaa !26
  %3327 = load <8 x double>, ptr %232, align 64, !tbaa !26
  %3328 = fsub <8 x double> %3326, %3327
  %3329 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3328)
  %3330 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %3331 = fmul <8 x double> %3330, splat (double 1.500000e+00)
  %3332 = fcmp ogt <8 x double> %3329, %3331
  %3333 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %3334 = fcmp ogt <8 x double> %3333, splat (double 2.000000e-03)
  %3335 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %3336 = fcmp oeq <8 x double> %3335, zeroinitializer
  %3337 = and <8 x i1> %3332, %3336
  %3338 = and <8 x i1> %3334, %3337
  %3339 = fdiv <8 x double> %3330, %3329
  %3340 = select <8 x i1> %3338, <8 x i64> %3321, <8 x i64> zeroinitializer
  %3341 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %3342 = fcmp ogt <8 x double> %3341, %3333
  %3343 = select <8 x i1> %3342, <8 x double> %3341, <8 x double> %3333
  %3344 = select <8 x i1> %3338, <8 x double> zeroinitializer, <8 x double> %3343
  %3345 = icmp eq <8 x i64> %3340, zeroinitializer
  %3346 = select <8 x i1> %3345, <8 x double> %3341, <8 x double> %3344
  store <8 x double> %3346, ptr %181, align 64, !tbaa !26
  %3347 = fcmp ogt <8 x double> %3339, splat (double 5.000000e-02)
  %3348 = select <8 x i1> %3347, <8 x double> %3339, <8 x double> splat (double 5.000000e-02)
  %3349 = fcmp olt <8 x double> %3348, splat (double 0x3FEE666666666666)
  %3350 = select <8 x i1> %3349, <8 x double> %3348, <8 x double> splat (double 0x3FEE666666666666)
  %3351 = fmul <8 x double> %3333, %3350
  %3352 = fcmp ogt <8 x double> %3351, splat (double 0x3EB0C6F7A0B5ED8D)
  %3353 = select <8 x i1> %3352, <8 x double> %3351, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3354 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %3355 = select <8 x i1> %3345, <8 x double> %3354, <8 x double> %3353
  store <8 x double> %3355, ptr %161, align 64, !tbaa !26
  %3356 = load <8 x double>, ptr %146, align 64, !tbaa !26
  %3357 = fadd <8 x double> %3356, splat (double 1.000000e+00)
  %3358 = select <8 x i1> %3345, <8 x double> %3356, <8 x double> %3357
  store <8 x double> %3358, ptr %146, align 64, !tbaa !26
  %3359 = xor <8 x i64> %3340, %3321
  %3360 = icmp sgt i64 %3314, 0
  br i1 %3360, label %3361, label %3459

3361:                                             ; preds = %3313
  %3362 = load ptr, ptr %151, align 8, !tbaa !28
  %3363 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %3364 = load <8 x double>, ptr %159, align 64, !tbaa !26
  %3365 = fcmp une <8 x double> %3363, %3364
  %3366 = fcmp ule <8 x double> %3363, zeroinitializer
  %3367 = or <8 x i1> %3366, %3365
  %3368 = fcmp ogt <8 x double> %3333, splat (double 0x3E7AD7F29ABCAF48)
  %3369 = fcmp ogt <8 x double> %3333, splat (double 1.000000e-05)
  %3370 = fcmp ogt <8 x double> %3333, splat (double 1.000000e-04)
  br label %3371

3371:                                             ; preds = %3361, %3371
  %3372 = phi i64 [ 0, %3361 ], [ %3455, %3371 ]
  %3373 = phi <8 x double> [ splat (double 1.000000e+00), %3361 ], [ %3454, %3371 ]
  %3374 = phi <8 x i64> [ zeroinitializer, %3361 ], [ %3402, %3371 ]
  %3375 = phi <8 x i64> [ zeroinitializer, %3361 ], [ %3451, %3371 ]
  %3376 = getelementptr inbounds nuw %struct.Piece, ptr %3362, i64 %3372
  %3377 = getelementptr inbounds nuw i8, ptr %3376, i64 3072
  %3378 = load <8 x double>, ptr %3377, align 64, !tbaa !26
  %3379 = getelementptr inbounds nuw i8, ptr %3376, i64 3840
  %3380 = load <8 x double>, ptr %3379, align 64, !tbaa !26
  %3381 = getelementptr inbounds nuw i8, ptr %3376, i64 7360
  %3382 = load <8 x i64>, ptr %3381, align 64, !tbaa !26
  %3383 = xor <8 x i64> %3382, splat (i64 -1)
  %3384 = getelementptr inbounds nuw i8, ptr %3376, i64 896
  %3385 = load <8 x double>, ptr %3384, align 64, !tbaa !26
  %3386 = fmul <8 x double> %3385, splat (double 1.000000e-03)
  %3387 = fcmp ogt <8 x double> %3386, splat (double 0x3E7AD7F29ABCAF48)
  %3388 = fneg <8 x double> %3386
  %3389 = select <8 x i1> %3387, <8 x double> %3388, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3390 = fcmp olt <8 x double> %3378, %3389
  %3391 = select <8 x i1> %3390, <8 x i1> %3367, <8 x i1> zeroinitializer
  %3392 = select <8 x i1> %3391, <8 x i64> %3383, <8 x i64> zeroinitializer
  %3393 = fcmp ole <8 x double> %3380, zeroinitializer
  %3394 = select <8 x i1> %3393, <8 x i64> %3392, <8 x i64> zeroinitializer
  %3395 = getelementptr inbounds nuw i8, ptr %3376, i64 832
  %3396 = load <8 x double>, ptr %3395, align 64, !tbaa !26
  %3397 = fmul <8 x double> %3396, splat (double -3.000000e-07)
  %3398 = fcmp olt <8 x double> %3378, %3397
  %3399 = select <8 x i1> %3368, <8 x i1> %3398, <8 x i1> zeroinitializer
  %3400 = select <8 x i1> %3399, <8 x i64> %3394, <8 x i64> zeroinitializer
  %3401 = or <8 x i64> %3400, %3375
  %3402 = or <8 x i64> %3400, %3374
  %3403 = fcmp olt <8 x double> %3373, splat (double 3.000000e-01)
  %3404 = icmp eq <8 x i64> %3400, zeroinitializer
  %3405 = select <8 x i1> %3404, <8 x i1> splat (i1 true), <8 x i1> %3403
  %3406 = select <8 x i1> %3405, <8 x double> %3373, <8 x double> splat (double 3.000000e-01)
  %3407 = xor <8 x i64> %3394, splat (i64 -1)
  %3408 = and <8 x i64> %3392, %3407
  %3409 = select <8 x i1> %3369, <8 x i64> %3408, <8 x i64> zeroinitializer
  %3410 = fsub <8 x double> %3380, %3378
  %3411 = fdiv <8 x double> %3380, %3410
  %3412 = or <8 x i64> %3401, %3409
  %3413 = fcmp olt <8 x double> %3406, %3411
  %3414 = icmp eq <8 x i64> %3409, zeroinitializer
  %3415 = select <8 x i1> %3414, <8 x i1> splat (i1 true), <8 x i1> %3413
  %3416 = select <8 x i1> %3415, <8 x double> %3406, <8 x double> %3411
  %3417 = getelementptr inbounds nuw i8, ptr %3376, i64 3776
  %3418 = load <8 x double>, ptr %3417, align 64, !tbaa !26
  %3419 = getelementptr inbounds nuw i8, ptr %3376, i64 3008
  %3420 = load <8 x double>, ptr %3419, align 64, !tbaa !26
  %3421 = getelementptr inbounds nuw i8, ptr %3376, i64 7296
  %3422 = load <8 x double>, ptr %3421, align 64, !tbaa !26
  %3423 = fcmp oeq <8 x double> %3422, zeroinitializer
  %3424 = getelementptr inbounds nuw i8, ptr %3376, i64 1472
  %3425 = load <8 x double>, ptr %3424, align 64, !tbaa !26
  %3426 = fmul <8 x double> %3425, splat (double 0x3FEFF7CED916872B)
  %3427 = fcmp olt <8 x double> %3420, %3426
  %3428 = and <8 x i1> %3423, %3427
  %3429 = and <8 x i1> %3370, %3428
  %3430 = fsub <8 x double> %3418, %3425
  %3431 = fsub <8 x double> %3418, %3420
  %3432 = fdiv <8 x double> %3430, %3431
  %3433 = fcmp uge <8 x double> %3416, %3432
  %3434 = select <8 x i1> %3429, <8 x i1> %3433, <8 x i1> zeroinitializer
  %3435 = select <8 x i1> %3434, <8 x double> %3432, <8 x double> %3416
  %3436 = fcmp oeq <8 x double> %3422, splat (double 1.000000e+00)
  %3437 = getelementptr inbounds nuw i8, ptr %3376, i64 3264
  %3438 = load <8 x double>, ptr %3437, align 64, !tbaa !26
  %3439 = getelementptr inbounds nuw i8, ptr %3376, i64 1600
  %3440 = load <8 x double>, ptr %3439, align 64, !tbaa !26
  %3441 = fmul <8 x double> %3440, splat (double 1.000100e+00)
  %3442 = fcmp ogt <8 x double> %3438, %3441
  %3443 = and <8 x i1> %3436, %3442
  %3444 = and <8 x i1> %3370, %3443
  %3445 = getelementptr inbounds nuw i8, ptr %3376, i64 4032
  %3446 = load <8 x double>, ptr %3445, align 64, !tbaa !26
  %3447 = fsub <8 x double> %3440, %3446
  %3448 = fsub <8 x double> %3438, %3446
  %3449 = fdiv <8 x double> %3447, %3448
  %3450 = select <8 x i1> %3443, <8 x i1> %3370, <8 x i1> %3429
  %3451 = select <8 x i1> %3450, <8 x i64> splat (i64 -1), <8 x i64> %3412
  %3452 = fcmp uge <8 x double> %3435, %3449
  %3453 = select <8 x i1> %3444, <8 x i1> %3452, <8 x i1> zeroinitializer
  %3454 = select <8 x i1> %3453, <8 x double> %3449, <8 x double> %3435
  %3455 = add nuw nsw i64 %3372, 1
  %3456 = icmp eq i64 %3455, %3314
  br i1 %3456, label %3457, label %3371, !llvm.loop !118

3457:                                             ; preds = %3371
  %3458 = icmp eq <8 x i64> %3402, zeroinitializer
  br label %3459

3459:                                             ; preds = %3457, %3313
  %3460 = phi <8 x i64> [ zeroinitializer, %3313 ], [ %3451, %3457 ]
  %3461 = phi <8 x i1> [ splat (i1 true), %3313 ], [ %3458, %3457 ]
  %3462 = phi <8 x double> [ splat (double 1.000000e+00), %3313 ], [ %3454, %3457 ]
  %3463 = and <8 x i64> %3460, %3359
  %3464 = fcmp ogt <8 x double> %3346, %3333
  %3465 = select <8 x i1> %3464, <8 x double> %3346, <8 x double> %3333
  %3466 = select <8 x i1> %3461, <8 x double> %3465, <8 x double> zeroinitializer
  %3467 = icmp eq <8 x i64> %3463, zeroinitializer
  %3468 = select <8 x i1> %3467, <8 x double> %3346, <8 x double> %3466
  %3469 = fcmp ogt <8 x double> %3462, splat (double 5.000000e-02)
  %3470 = select <8 x i1> %3469, <8 x double> %3462, <8 x double> splat (double 5.000000e-02)
  %3471 = fcmp olt <8 x double> %3470, splat (double 0x3FEE666666666666)
  %3472 = select <8 x i1> %3471, <8 x double> %3470, <8 x double> splat (double 0x3FEE666666666666)
  %3473 = fmul <8 x double> %3333, %3472
  %3474 = fcmp ogt <8 x double> %3473, splat (double 0x3EB0C6F7A0B5ED8D)
  %3475 = select <8 x i1> %3474, <8 x double> %3473, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3476 = select <8 x i1> %3467, <8 x double> %3355, <8 x double> %3475
  %3477 = fadd <8 x double> %3358, splat (double 1.000000e+00)
  %3478 = select <8 x i1> %3467, <8 x double> %3358, <8 x double> %3477
  %3479 = xor <8 x i64> %3463, %3359
  %3480 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %3481 = fmul <8 x double> %3480, splat (double 5.000000e-01)
  %3482 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %3483 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %3484 = fneg <8 x double> %3481
  %3485 = icmp eq <8 x i64> %3483, zeroinitializer
  %3486 = select <8 x i1> %3485, <8 x double> %3484, <8 x double> %3481
  %3487 = fadd <8 x double> %3482, %3486
  %3488 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %3489 = fsub <8 x double> %3488, %3487
  %3490 = load <8 x double>, ptr %187, align 64, !tbaa !26
  %3491 = fsub <8 x double> %3490, %3487
  %3492 = fneg <8 x double> %3489
  %3493 = select <8 x i1> %3485, <8 x double> %3492, <8 x double> %3489
  %3494 = fneg <8 x double> %3491
  %3495 = select <8 x i1> %3485, <8 x double> %3494, <8 x double> %3491
  %3496 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %3497 = fcmp oeq <8 x double> %3496, zeroinitializer
  %3498 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %3499 = fcmp oeq <8 x double> %3498, zeroinitializer
  %3500 = and <8 x i1> %3497, %3499
  %3501 = fcmp olt <8 x double> %3493, splat (double -4.000000e-03)
  %3502 = and <8 x i1> %3500, %3501
  %3503 = fcmp ogt <8 x double> %3495, splat (double 4.000000e-03)
  %3504 = and <8 x i1> %3503, %3502
  %3505 = and <8 x i1> %3334, %3504
  %3506 = fsub <8 x double> %3493, %3495
  %3507 = fdiv <8 x double> %3493, %3506
  %3508 = select <8 x i1> %3505, <8 x i64> %3479, <8 x i64> zeroinitializer
  %3509 = fcmp ogt <8 x double> %3468, %3333
  %3510 = icmp eq <8 x i64> %3508, zeroinitializer
  %3511 = select <8 x i1> %3510, <8 x i1> splat (i1 true), <8 x i1> %3509
  %3512 = select <8 x i1> %3511, <8 x double> %3468, <8 x double> %3333
  store <8 x double> %3512, ptr %181, align 64, !tbaa !26
  %3513 = fcmp ogt <8 x double> %3507, splat (double 5.000000e-02)
  %3514 = select <8 x i1> %3513, <8 x double> %3507, <8 x double> splat (double 5.000000e-02)
  %3515 = fcmp olt <8 x double> %3514, splat (double 0x3FEE666666666666)
  %3516 = select <8 x i1> %3515, <8 x double> %3514, <8 x double> splat (double 0x3FEE666666666666)
  %3517 = fmul <8 x double> %3333, %3516
  %3518 = fcmp ogt <8 x double> %3517, splat (double 0x3EB0C6F7A0B5ED8D)
  %3519 = select <8 x i1> %3518, <8 x double> %3517, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3520 = select <8 x i1> %3510, <8 x double> %3476, <8 x double> %3519
  store <8 x double> %3520, ptr %161, align 64, !tbaa !26
  %3521 = fadd <8 x double> %3478, splat (double 1.000000e+00)
  %3522 = select <8 x i1> %3510, <8 x double> %3478, <8 x double> %3521
  store <8 x double> %3522, ptr %146, align 64, !tbaa !26
  %3523 = xor <8 x i64> %3508, %3479
  %3524 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %3525 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %3526 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %3527 = fsub <8 x double> %3525, %3526
  %3528 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %3529 = fcmp une <8 x double> %3528, splat (double 1.000000e+00)
  %3530 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %3531 = fsub <8 x double> %3488, %3530
  %3532 = select <8 x i1> %3529, <8 x double> splat (double -1.000000e+00), <8 x double> %3531
  %3533 = fcmp une <8 x double> %3528, splat (double 2.000000e+00)
  %3534 = fsub <8 x double> %3524, %3530
  %3535 = select <8 x i1> %3533, <8 x double> %3532, <8 x double> %3534
  %3536 = fcmp une <8 x double> %3528, splat (double 3.000000e+00)
  %3537 = fsub <8 x double> %3527, %3530
  %3538 = select <8 x i1> %3536, <8 x double> %3535, <8 x double> %3537
  %3539 = fcmp une <8 x double> %3528, splat (double 4.000000e+00)
  %3540 = fsub <8 x double> %3530, %3527
  %3541 = select <8 x i1> %3539, <8 x double> %3538, <8 x double> %3540
  br i1 %3360, label %3542, label %3574

3542:                                             ; preds = %3459
  %3543 = load ptr, ptr %151, align 8, !tbaa !28
  %3544 = and i64 %3314, 1
  %3545 = icmp eq i64 %3314, 1
  br i1 %3545, label %3564, label %3546

3546:                                             ; preds = %3542
  %3547 = and i64 %3314, 9223372036854775806
  br label %3548

3548:                                             ; preds = %3548, %3546
  %3549 = phi i64 [ 0, %3546 ], [ %3561, %3548 ]
  %3550 = phi <8 x double> [ splat (double 1.000000e+09), %3546 ], [ %3560, %3548 ]
  %3551 = phi i64 [ 0, %3546 ], [ %3562, %3548 ]
  %3552 = getelementptr inbounds nuw %struct.Piece, ptr %3543, i64 %3549, i32 35
  %3553 = load <8 x double>, ptr %3552, align 64, !tbaa !26
  %3554 = fcmp olt <8 x double> %3550, %3553
  %3555 = select <8 x i1> %3554, <8 x double> %3550, <8 x double> %3553
  %3556 = or disjoint i64 %3549, 1
  %3557 = getelementptr inbounds nuw %struct.Piece, ptr %3543, i64 %3556, i32 35
  %3558 = load <8 x double>, ptr %3557, align 64, !tbaa !26
  %3559 = fcmp olt <8 x double> %3555, %3558
  %3560 = select <8 x i1> %3559, <8 x double> %3555, <8 x double> %3558
  %3561 = add nuw nsw i64 %3549, 2
  %3562 = add i64 %3551, 2
  %3563 = icmp eq i64 %3562, %3547
  br i1 %3563, label %3564, label %3548, !llvm.loop !119

3564:                                             ; preds = %3548, %3542
  %3565 = phi <8 x double> [ poison, %3542 ], [ %3560, %3548 ]
  %3566 = phi i64 [ 0, %3542 ], [ %3561, %3548 ]
  %3567 = phi <8 x double> [ splat (double 1.000000e+09), %3542 ], [ %3560, %3548 ]
  %3568 = icmp eq i64 %3544, 0
  br i1 %3568, label %3574, label %3569

3569:                                             ; preds = %3564
  %3570 = getelementptr inbounds nuw %struct.Piece, ptr %3543, i64 %3566, i32 35
  %3571 = load <8 x double>, ptr %3570, align 64, !tbaa !26
  %3572 = fcmp olt <8 x double> %3567, %3571
  %3573 = select <8 x i1> %3572, <8 x double> %3567, <8 x double> %3571
  br label %3574

3574:                                             ; preds = %3569, %3564, %3459
  %3575 = phi <8 x double> [ splat (double 1.000000e+09), %3459 ], [ %3565, %3564 ], [ %3573, %3569 ]
  %3576 = load <8 x double>, ptr %201, align 64, !tbaa !26
  %3577 = fsub <8 x double> %3576, %3526
  %3578 = fsub <8 x double> %3490, %3530
  %3579 = select <8 x i1> %3529, <8 x double> splat (double -1.000000e+00), <8 x double> %3578
  %3580 = fsub <8 x double> %3575, %3530
  %3581 = select <8 x i1> %3533, <8 x double> %3579, <8 x double> %3580
  %3582 = fsub <8 x double> %3577, %3530
  %3583 = select <8 x i1> %3536, <8 x double> %3581, <8 x double> %3582
  %3584 = fsub <8 x double> %3530, %3577
  %3585 = select <8 x i1> %3539, <8 x double> %3583, <8 x double> %3584
  %3586 = fcmp une <8 x double> %3528, zeroinitializer
  %3587 = fcmp oge <8 x double> %3333, splat (double 5.000000e-02)
  %3588 = and <8 x i1> %3587, %3586
  %3589 = fcmp olt <8 x double> %3541, zeroinitializer
  %3590 = and <8 x i1> %3588, %3589
  %3591 = fsub <8 x double> %3585, %3541
  %3592 = fmul <8 x double> %3591, splat (double 2.000000e-02)
  %3593 = fcmp ogt <8 x double> %3585, %3592
  %3594 = and <8 x i1> %3590, %3593
  %3595 = fsub <8 x double> %3541, %3585
  %3596 = fdiv <8 x double> %3541, %3595
  %3597 = fcmp olt <8 x double> %3596, splat (double 0x3FEE666666666666)
  %3598 = and <8 x i1> %3597, %3594
  %3599 = select <8 x i1> %3598, <8 x i64> %3523, <8 x i64> zeroinitializer
  %3600 = fcmp ogt <8 x double> %3512, %3333
  %3601 = icmp eq <8 x i64> %3599, zeroinitializer
  %3602 = select <8 x i1> %3601, <8 x i1> splat (i1 true), <8 x i1> %3600
  %3603 = select <8 x i1> %3602, <8 x double> %3512, <8 x double> %3333
  store <8 x double> %3603, ptr %181, align 64, !tbaa !26
  %3604 = fcmp ogt <8 x double> %3596, splat (double 5.000000e-02)
  %3605 = select <8 x i1> %3604, <8 x double> %3596, <8 x double> splat (double 5.000000e-02)
  %3606 = fcmp olt <8 x double> %3605, splat (double 0x3FEE666666666666)
  %3607 = select <8 x i1> %3606, <8 x double> %3605, <8 x double> splat (double 0x3FEE666666666666)
  %3608 = fmul <8 x double> %3333, %3607
  %3609 = fcmp ogt <8 x double> %3608, splat (double 0x3EB0C6F7A0B5ED8D)
  %3610 = select <8 x i1> %3609, <8 x double> %3608, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3611 = select <8 x i1> %3601, <8 x double> %3520, <8 x double> %3610
  store <8 x double> %3611, ptr %161, align 64, !tbaa !26
  %3612 = fadd <8 x double> %3522, splat (double 1.000000e+00)
  %3613 = select <8 x i1> %3601, <8 x double> %3522, <8 x double> %3612
  store <8 x double> %3613, ptr %146, align 64, !tbaa !26
  %3614 = xor <8 x i64> %3599, %3523
  %3615 = or <8 x i64> %3614, %3320
  %3616 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3615)
  %3617 = icmp eq i64 %3616, 0
  br i1 %3617, label %549, label %3674

3618:                                             ; preds = %3311, %3666
  %3619 = phi i64 [ 0, %3311 ], [ %3671, %3666 ]
  %3620 = load ptr, ptr %151, align 8, !tbaa !28
  %3621 = getelementptr inbounds nuw %struct.Piece, ptr %3620, i64 %3619
  %3622 = getelementptr inbounds nuw i8, ptr %3621, i64 7560
  %3623 = load ptr, ptr %3622, align 8, !tbaa !58
  %3624 = load <8 x double>, ptr %3623, align 64, !tbaa !26
  %3625 = getelementptr inbounds nuw i8, ptr %3621, i64 1344
  %3626 = load <8 x double>, ptr %3625, align 64, !tbaa !26
  %3627 = getelementptr inbounds nuw i8, ptr %3623, i64 64
  %3628 = load <8 x double>, ptr %3627, align 64, !tbaa !26
  %3629 = fsub <8 x double> %3628, %3624
  %3630 = fneg <8 x double> %3626
  %3631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3630, <8 x double> %3629, <8 x double> %3624)
  %3632 = getelementptr inbounds nuw i8, ptr %3621, i64 7552
  %3633 = load i64, ptr %3632, align 64, !tbaa !31
  %3634 = icmp eq i64 %3633, 0
  br i1 %3634, label %3666, label %3635

3635:                                             ; preds = %3618
  %3636 = getelementptr <8 x double>, ptr %3623, i64 %3633
  %3637 = getelementptr i8, ptr %3636, i64 -64
  %3638 = load <8 x double>, ptr %3637, align 64, !tbaa !26
  %3639 = load <8 x double>, ptr %3636, align 64, !tbaa !26
  %3640 = getelementptr inbounds nuw i8, ptr %3621, i64 2880
  %3641 = load <8 x double>, ptr %3640, align 64, !tbaa !26
  %3642 = getelementptr inbounds nuw i8, ptr %3621, i64 2944
  %3643 = load <8 x double>, ptr %3642, align 64, !tbaa !26
  %3644 = getelementptr inbounds nuw i8, ptr %3621, i64 64
  %3645 = load <8 x double>, ptr %3644, align 64, !tbaa !26
  %3646 = fsub <8 x double> %3643, %3645
  %3647 = fmul <8 x double> %3641, %3646
  %3648 = getelementptr inbounds nuw i8, ptr %3621, i64 576
  %3649 = load <8 x double>, ptr %3648, align 64, !tbaa !26
  %3650 = getelementptr inbounds nuw i8, ptr %3621, i64 2816
  %3651 = load <8 x double>, ptr %3650, align 64, !tbaa !26
  %3652 = fdiv <8 x double> %3649, %3651
  %3653 = getelementptr inbounds nuw i8, ptr %3621, i64 192
  %3654 = load <8 x double>, ptr %3653, align 64, !tbaa !26
  %3655 = getelementptr inbounds nuw i8, ptr %3621, i64 256
  %3656 = load <8 x double>, ptr %3655, align 64, !tbaa !26
  %3657 = getelementptr inbounds nuw i8, ptr %3621, i64 320
  %3658 = load <8 x double>, ptr %3657, align 64, !tbaa !26
  %3659 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3639, <8 x double> %3658, <8 x double> %3656)
  %3660 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3639, <8 x double> %3659, <8 x double> %3654)
  %3661 = fdiv <8 x double> %3660, %3647
  %3662 = fmul <8 x double> %3639, %3661
  %3663 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3652, <8 x double> %3638, <8 x double> %3662)
  %3664 = fadd <8 x double> %3652, %3661
  %3665 = fdiv <8 x double> %3663, %3664
  br label %3666

3666:                                             ; preds = %3618, %3635
  %3667 = phi <8 x double> [ %3665, %3635 ], [ %3631, %3618 ]
  %3668 = getelementptr inbounds nuw i8, ptr %3621, i64 7232
  %3669 = load <8 x double>, ptr %3668, align 64, !tbaa !26
  %3670 = select <8 x i1> %3312, <8 x double> %3669, <8 x double> %3667
  store <8 x double> %3670, ptr %3668, align 64, !tbaa !26
  %3671 = add nuw nsw i64 %3619, 1
  %3672 = load i64, ptr %178, align 8, !tbaa !20
  %3673 = icmp slt i64 %3671, %3672
  br i1 %3673, label %3618, label %3313, !llvm.loop !120

3674:                                             ; preds = %3574
  %3675 = icmp eq <8 x i64> %3615, zeroinitializer
  %3676 = select <8 x i1> %3675, <8 x double> %3327, <8 x double> %3326
  store <8 x double> %3676, ptr %232, align 64, !tbaa !26
  %3677 = load <8 x double>, ptr %172, align 64, !tbaa !26
  %3678 = select <8 x i1> %3675, <8 x double> %3677, <8 x double> %3488
  store <8 x double> %3678, ptr %172, align 64, !tbaa !26
  %3679 = select <8 x i1> %3675, <8 x double> %3488, <8 x double> %3490
  store <8 x double> %3679, ptr %166, align 64, !tbaa !26
  %3680 = load <8 x double>, ptr %263, align 64, !tbaa !26
  %3681 = select <8 x i1> %3675, <8 x double> %3680, <8 x double> %3525
  store <8 x double> %3681, ptr %263, align 64, !tbaa !26
  %3682 = select <8 x i1> %3675, <8 x double> %3525, <8 x double> %3576
  store <8 x double> %3682, ptr %264, align 64, !tbaa !26
  %3683 = load <8 x double>, ptr %266, align 64, !tbaa !26
  %3684 = load <8 x double>, ptr %265, align 64, !tbaa !26
  %3685 = select <8 x i1> %3675, <8 x double> %3684, <8 x double> %3683
  store <8 x double> %3685, ptr %265, align 64, !tbaa !26
  %3686 = load <8 x double>, ptr %267, align 64, !tbaa !26
  %3687 = select <8 x i1> %3675, <8 x double> %3683, <8 x double> %3686
  store <8 x double> %3687, ptr %266, align 64, !tbaa !26
  %3688 = load <8 x double>, ptr %269, align 64, !tbaa !26
  %3689 = load <8 x double>, ptr %268, align 64, !tbaa !26
  %3690 = select <8 x i1> %3675, <8 x double> %3689, <8 x double> %3688
  store <8 x double> %3690, ptr %268, align 64, !tbaa !26
  %3691 = load <8 x double>, ptr %270, align 64, !tbaa !26
  %3692 = select <8 x i1> %3675, <8 x double> %3688, <8 x double> %3691
  store <8 x double> %3692, ptr %269, align 64, !tbaa !26
  %3693 = load <8 x double>, ptr %272, align 64, !tbaa !26
  %3694 = load <8 x double>, ptr %271, align 64, !tbaa !26
  %3695 = select <8 x i1> %3675, <8 x double> %3694, <8 x double> %3693
  store <8 x double> %3695, ptr %271, align 64, !tbaa !26
  %3696 = load <8 x double>, ptr %273, align 64, !tbaa !26
  %3697 = select <8 x i1> %3675, <8 x double> %3693, <8 x double> %3696
  store <8 x double> %3697, ptr %272, align 64, !tbaa !26
  %3698 = load <8 x double>, ptr %275, align 64, !tbaa !26
  %3699 = load <8 x double>, ptr %274, align 64, !tbaa !26
  %3700 = select <8 x i1> %3675, <8 x double> %3699, <8 x double> %3698
  store <8 x double> %3700, ptr %274, align 64, !tbaa !26
  %3701 = load <8 x double>, ptr %276, align 64, !tbaa !26
  %3702 = select <8 x i1> %3675, <8 x double> %3698, <8 x double> %3701
  store <8 x double> %3702, ptr %275, align 64, !tbaa !26
  %3703 = xor <8 x i64> %3615, splat (i64 -1)
  br i1 %3360, label %3704, label %4075

3704:                                             ; preds = %3674, %4040
  %3705 = phi i64 [ %4052, %4040 ], [ 0, %3674 ]
  %3706 = load ptr, ptr %151, align 8, !tbaa !28
  %3707 = getelementptr inbounds nuw %struct.Piece, ptr %3706, i64 %3705
  %3708 = getelementptr inbounds nuw i8, ptr %3707, i64 1664
  %3709 = load <8 x double>, ptr %3708, align 64, !tbaa !26
  %3710 = fcmp ogt <8 x double> %3709, zeroinitializer
  %3711 = bitcast <8 x i1> %3710 to i8
  %3712 = icmp eq i8 %3711, 0
  %3713 = load i64, ptr %141, align 16, !tbaa !21
  br i1 %3712, label %3971, label %3714

3714:                                             ; preds = %3704
  %3715 = add i64 %3713, -1
  %3716 = getelementptr inbounds nuw i8, ptr %3707, i64 4416
  %3717 = load <8 x double>, ptr %3716, align 64, !tbaa !26
  %3718 = getelementptr inbounds nuw i8, ptr %3707, i64 3648
  %3719 = load <8 x double>, ptr %3718, align 64, !tbaa !26
  %3720 = getelementptr inbounds nuw i8, ptr %3707, i64 7552
  %3721 = load i64, ptr %3720, align 64, !tbaa !31
  %3722 = icmp sgt i64 %3713, %3721
  br i1 %3722, label %3731, label %3723

3723:                                             ; preds = %3714
  %3724 = getelementptr inbounds nuw i8, ptr %3707, i64 7648
  %3725 = load ptr, ptr %3724, align 32, !tbaa !72
  %3726 = getelementptr inbounds <8 x double>, ptr %3725, i64 %3715
  %3727 = load <8 x double>, ptr %3726, align 64, !tbaa !26
  %3728 = getelementptr inbounds nuw i8, ptr %3707, i64 1536
  %3729 = load <8 x double>, ptr %3728, align 64, !tbaa !26
  %3730 = fmul <8 x double> %3727, %3729
  br label %3740

3731:                                             ; preds = %3714
  %3732 = getelementptr inbounds nuw i8, ptr %3707, i64 1536
  %3733 = load <8 x double>, ptr %3732, align 64, !tbaa !26
  %3734 = getelementptr inbounds nuw i8, ptr %3707, i64 7648
  %3735 = load ptr, ptr %3734, align 32, !tbaa !72
  %3736 = getelementptr inbounds <8 x double>, ptr %3735, i64 %3715
  %3737 = load <8 x double>, ptr %3736, align 64, !tbaa !26
  %3738 = fsub <8 x double> %3717, %3733
  %3739 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3737, <8 x double> %3738, <8 x double> %3733)
  br label %3740

3740:                                             ; preds = %3731, %3723
  %3741 = phi <8 x double> [ %3729, %3723 ], [ %3733, %3731 ]
  %3742 = phi <8 x double> [ %3730, %3723 ], [ %3739, %3731 ]
  %3743 = getelementptr inbounds nuw i8, ptr %3707, i64 3008
  %3744 = load <8 x double>, ptr %3743, align 64, !tbaa !26
  %3745 = fcmp ole <8 x double> %3742, %3744
  %3746 = getelementptr inbounds nuw i8, ptr %3707, i64 7296
  %3747 = load <8 x double>, ptr %3746, align 64, !tbaa !26
  %3748 = fcmp oeq <8 x double> %3747, zeroinitializer
  %3749 = select <8 x i1> %3748, <8 x i1> %3745, <8 x i1> zeroinitializer
  %3750 = select <8 x i1> %3749, <8 x i64> %3615, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %3751 = xor <8 x i64> %3750, %3615
  store <8 x i64> %3751, ptr %12, align 64, !tbaa !26
  %3752 = fsub <8 x double> %3717, %3719
  %3753 = getelementptr inbounds nuw i8, ptr %3707, i64 1536
  %3754 = fsub <8 x double> %3719, %3741
  %3755 = fdiv <8 x double> %3752, %3754
  %3756 = getelementptr inbounds nuw i8, ptr %3707, i64 7592
  %3757 = load ptr, ptr %3756, align 8, !tbaa !65
  %3758 = getelementptr inbounds <8 x double>, ptr %3757, i64 %3721
  %3759 = load <8 x double>, ptr %3758, align 64, !tbaa !26
  %3760 = getelementptr inbounds nuw i8, ptr %3707, i64 7600
  %3761 = load ptr, ptr %3760, align 16, !tbaa !48
  %3762 = getelementptr inbounds <8 x double>, ptr %3761, i64 %3721
  %3763 = load <8 x double>, ptr %3762, align 64, !tbaa !26
  %3764 = icmp eq <8 x i64> %3750, zeroinitializer
  %3765 = select <8 x i1> %3764, <8 x double> %3763, <8 x double> %3759
  store <8 x double> %3765, ptr %3762, align 64, !tbaa !26
  %3766 = load i64, ptr %3720, align 64, !tbaa !31
  %3767 = add nsw i64 %3766, 1
  %3768 = icmp slt i64 %3767, %3715
  br i1 %3768, label %3769, label %3773

3769:                                             ; preds = %3740
  %3770 = getelementptr inbounds nuw i8, ptr %3707, i64 7664
  br label %3813

3771:                                             ; preds = %3813
  %3772 = load i64, ptr %3720, align 64, !tbaa !31
  br label %3773

3773:                                             ; preds = %3771, %3740
  %3774 = phi i64 [ %3766, %3740 ], [ %3772, %3771 ]
  %3775 = phi <8 x double> [ %3759, %3740 ], [ %3818, %3771 ]
  %3776 = icmp sgt i64 %3713, %3774
  br i1 %3776, label %3784, label %3777

3777:                                             ; preds = %3773
  %3778 = getelementptr inbounds nuw i8, ptr %3707, i64 7648
  %3779 = load ptr, ptr %3778, align 32, !tbaa !72
  %3780 = getelementptr inbounds <8 x double>, ptr %3779, i64 %3715
  %3781 = load <8 x double>, ptr %3780, align 64, !tbaa !26
  %3782 = load <8 x double>, ptr %3753, align 64, !tbaa !26
  %3783 = fmul <8 x double> %3781, %3782
  br label %3792

3784:                                             ; preds = %3773
  %3785 = load <8 x double>, ptr %3753, align 64, !tbaa !26
  %3786 = getelementptr inbounds nuw i8, ptr %3707, i64 7648
  %3787 = load ptr, ptr %3786, align 32, !tbaa !72
  %3788 = getelementptr inbounds <8 x double>, ptr %3787, i64 %3715
  %3789 = load <8 x double>, ptr %3788, align 64, !tbaa !26
  %3790 = fsub <8 x double> %3719, %3785
  %3791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3789, <8 x double> %3790, <8 x double> %3785)
  br label %3792

3792:                                             ; preds = %3784, %3777
  %3793 = phi <8 x double> [ %3783, %3777 ], [ %3791, %3784 ]
  %3794 = load ptr, ptr %3756, align 8, !tbaa !65
  %3795 = getelementptr inbounds <8 x double>, ptr %3794, i64 %3715
  %3796 = load <8 x double>, ptr %3795, align 64, !tbaa !26
  %3797 = load ptr, ptr %3760, align 16, !tbaa !48
  %3798 = getelementptr inbounds <8 x double>, ptr %3797, i64 %3715
  %3799 = fsub <8 x double> %3775, %3796
  %3800 = fsub <8 x double> %3742, %3793
  %3801 = load <8 x double>, ptr %3743, align 64, !tbaa !26
  %3802 = fsub <8 x double> %3801, %3793
  %3803 = fdiv <8 x double> %3800, %3802
  %3804 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3799, <8 x double> %3803, <8 x double> %3796)
  %3805 = load <8 x double>, ptr %3798, align 64, !tbaa !26
  %3806 = select <8 x i1> %3764, <8 x double> %3805, <8 x double> %3804
  store <8 x double> %3806, ptr %3798, align 64, !tbaa !26
  %3807 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3751)
  %3808 = icmp eq i64 %3807, 0
  br i1 %3808, label %3969, label %3809

3809:                                             ; preds = %3792
  %3810 = getelementptr inbounds nuw i8, ptr %3707, i64 7648
  %3811 = getelementptr inbounds nuw i8, ptr %3707, i64 3136
  %3812 = getelementptr inbounds nuw i8, ptr %3707, i64 832
  br label %3831

3813:                                             ; preds = %3769, %3813
  %3814 = phi i64 [ %3767, %3769 ], [ %3829, %3813 ]
  %3815 = phi <8 x double> [ %3759, %3769 ], [ %3818, %3813 ]
  %3816 = load ptr, ptr %3756, align 8, !tbaa !65
  %3817 = getelementptr inbounds <8 x double>, ptr %3816, i64 %3814
  %3818 = load <8 x double>, ptr %3817, align 64, !tbaa !26
  %3819 = load ptr, ptr %3760, align 16, !tbaa !48
  %3820 = getelementptr inbounds <8 x double>, ptr %3819, i64 %3814
  %3821 = fsub <8 x double> %3815, %3818
  %3822 = load ptr, ptr %3770, align 16, !tbaa !121
  %3823 = getelementptr inbounds <8 x double>, ptr %3822, i64 %3814
  %3824 = load <8 x double>, ptr %3823, align 64, !tbaa !26
  %3825 = fmul <8 x double> %3755, %3824
  %3826 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3821, <8 x double> %3825, <8 x double> %3818)
  %3827 = load <8 x double>, ptr %3820, align 64, !tbaa !26
  %3828 = select <8 x i1> %3764, <8 x double> %3827, <8 x double> %3826
  store <8 x double> %3828, ptr %3820, align 64, !tbaa !26
  %3829 = add nsw i64 %3814, 1
  %3830 = icmp eq i64 %3829, %3715
  br i1 %3830, label %3771, label %3813, !llvm.loop !122

3831:                                             ; preds = %3809, %3966
  %3832 = phi i64 [ 0, %3809 ], [ %3967, %3966 ]
  %3833 = getelementptr inbounds nuw i64, ptr %12, i64 %3832
  %3834 = load i64, ptr %3833, align 8, !tbaa !30
  %3835 = icmp eq i64 %3834, 0
  br i1 %3835, label %3966, label %3836

3836:                                             ; preds = %3831
  %3837 = load i64, ptr %141, align 16, !tbaa !21
  %3838 = load i64, ptr %3720, align 64, !tbaa !31
  %3839 = getelementptr inbounds nuw double, ptr %3753, i64 %3832
  %3840 = load double, ptr %3839, align 8, !tbaa !43
  %3841 = getelementptr inbounds nuw double, ptr %3743, i64 %3832
  %3842 = load double, ptr %3841, align 8, !tbaa !43
  %3843 = add nsw i64 %3837, -1
  %3844 = icmp sgt i64 %3837, %3838
  br i1 %3844, label %3845, label %3966

3845:                                             ; preds = %3836
  %3846 = getelementptr inbounds nuw double, ptr %3718, i64 %3832
  %3847 = load double, ptr %3846, align 8, !tbaa !43
  %3848 = getelementptr inbounds nuw double, ptr %3716, i64 %3832
  %3849 = load double, ptr %3848, align 8, !tbaa !43
  %3850 = load ptr, ptr %3810, align 32
  %3851 = getelementptr i8, ptr %3850, i64 64
  %3852 = getelementptr double, ptr %3851, i64 %3832
  %3853 = fsub double %3847, %3840
  %3854 = getelementptr double, ptr %3850, i64 %3832
  %3855 = fsub double %3849, %3840
  %3856 = load ptr, ptr %3756, align 8, !tbaa !65
  %3857 = getelementptr double, ptr %3856, i64 %3832
  %3858 = load ptr, ptr %3760, align 16, !tbaa !48
  %3859 = getelementptr double, ptr %3858, i64 %3832
  %3860 = getelementptr <8 x double>, ptr %3854, i64 %3843
  br label %3888

3861:                                             ; preds = %3934
  %3862 = getelementptr inbounds nuw double, ptr %3746, i64 %3832
  %3863 = load double, ptr %3862, align 8, !tbaa !43
  %3864 = fcmp ogt double %3863, 0.000000e+00
  %3865 = fcmp ogt double %3945, 0.000000e+00
  %3866 = select i1 %3864, i1 %3865, i1 false
  br i1 %3866, label %3867, label %3966

3867:                                             ; preds = %3861
  %3868 = getelementptr inbounds nuw double, ptr %3811, i64 %3832
  %3869 = getelementptr inbounds nuw double, ptr %3812, i64 %3832
  %3870 = sub i64 %3837, %3838
  %3871 = add i64 %3838, 1
  %3872 = and i64 %3870, 1
  %3873 = icmp eq i64 %3872, 0
  br i1 %3873, label %3883, label %3874

3874:                                             ; preds = %3867
  %3875 = load double, ptr %3868, align 8, !tbaa !43
  %3876 = load double, ptr %3869, align 8, !tbaa !43
  %3877 = fmul double %3945, %3876
  %3878 = fdiv double %3875, %3877
  %3879 = getelementptr <8 x double>, ptr %3859, i64 %3838
  %3880 = load double, ptr %3879, align 8, !tbaa !43
  %3881 = fmul double %3880, %3878
  store double %3881, ptr %3879, align 8, !tbaa !43
  %3882 = add nsw i64 %3838, 1
  br label %3883

3883:                                             ; preds = %3874, %3867
  %3884 = phi i64 [ %3838, %3867 ], [ %3882, %3874 ]
  %3885 = icmp eq i64 %3837, %3871
  br i1 %3885, label %3966, label %3886

3886:                                             ; preds = %3883
  %3887 = getelementptr i8, ptr %3859, i64 64
  br label %3948

3888:                                             ; preds = %3934, %3845
  %3889 = phi double [ 0.000000e+00, %3845 ], [ %3945, %3934 ]
  %3890 = phi i64 [ %3843, %3845 ], [ %3946, %3934 ]
  %3891 = icmp eq i64 %3890, %3843
  br i1 %3891, label %3892, label %3895

3892:                                             ; preds = %3888
  %3893 = load double, ptr %3860, align 8, !tbaa !43
  %3894 = tail call noundef double @llvm.fmuladd.f64(double %3893, double %3853, double %3840)
  br label %3906

3895:                                             ; preds = %3888
  %3896 = getelementptr <8 x double>, ptr %3852, i64 %3890
  %3897 = load double, ptr %3896, align 8, !tbaa !43
  %3898 = tail call noundef double @llvm.fmuladd.f64(double %3897, double %3853, double %3840)
  %3899 = getelementptr <8 x double>, ptr %3854, i64 %3890
  %3900 = load double, ptr %3899, align 8, !tbaa !43
  %3901 = tail call noundef double @llvm.fmuladd.f64(double %3900, double %3853, double %3840)
  %3902 = tail call noundef double @llvm.fmuladd.f64(double %3897, double %3855, double %3840)
  %3903 = fcmp ult double %3902, %3898
  br i1 %3903, label %3904, label %3906

3904:                                             ; preds = %3895
  %3905 = add nsw i64 %3890, 1
  br label %3906

3906:                                             ; preds = %3904, %3895, %3892
  %3907 = phi double [ %3901, %3904 ], [ %3901, %3895 ], [ %3894, %3892 ]
  %3908 = phi double [ %3898, %3904 ], [ %3898, %3895 ], [ %3842, %3892 ]
  %3909 = phi i64 [ %3905, %3904 ], [ %3890, %3895 ], [ %3843, %3892 ]
  %3910 = icmp sgt i64 %3909, %3838
  br i1 %3910, label %3911, label %3934

3911:                                             ; preds = %3906
  %3912 = load ptr, ptr %3756, align 8
  %3913 = getelementptr double, ptr %3912, i64 %3832
  br label %3914

3914:                                             ; preds = %3929, %3911
  %3915 = phi i64 [ %3909, %3911 ], [ %3932, %3929 ]
  %3916 = phi double [ 0.000000e+00, %3911 ], [ %3931, %3929 ]
  %3917 = phi double [ %3908, %3911 ], [ %3930, %3929 ]
  %3918 = getelementptr <8 x double>, ptr %3854, i64 %3915
  %3919 = load double, ptr %3918, align 8, !tbaa !43
  %3920 = tail call noundef double @llvm.fmuladd.f64(double %3919, double %3855, double %3840)
  %3921 = fcmp ogt double %3920, %3907
  br i1 %3921, label %3922, label %3934

3922:                                             ; preds = %3914
  %3923 = fcmp ogt double %3917, %3920
  br i1 %3923, label %3924, label %3929

3924:                                             ; preds = %3922
  %3925 = getelementptr <8 x double>, ptr %3913, i64 %3915
  %3926 = load double, ptr %3925, align 8, !tbaa !43
  %3927 = fsub double %3917, %3920
  %3928 = tail call double @llvm.fmuladd.f64(double %3926, double %3927, double %3916)
  br label %3929

3929:                                             ; preds = %3924, %3922
  %3930 = phi double [ %3920, %3924 ], [ %3917, %3922 ]
  %3931 = phi double [ %3928, %3924 ], [ %3916, %3922 ]
  %3932 = add nsw i64 %3915, -1
  %3933 = icmp sgt i64 %3932, %3838
  br i1 %3933, label %3914, label %3934, !llvm.loop !123

3934:                                             ; preds = %3929, %3914, %3906
  %3935 = phi double [ %3908, %3906 ], [ %3917, %3914 ], [ %3930, %3929 ]
  %3936 = phi double [ 0.000000e+00, %3906 ], [ %3916, %3914 ], [ %3931, %3929 ]
  %3937 = phi i64 [ %3909, %3906 ], [ %3915, %3914 ], [ %3838, %3929 ]
  %3938 = getelementptr <8 x double>, ptr %3857, i64 %3937
  %3939 = load double, ptr %3938, align 8, !tbaa !43
  %3940 = fsub double %3935, %3907
  %3941 = tail call double @llvm.fmuladd.f64(double %3939, double %3940, double %3936)
  %3942 = fsub double %3908, %3907
  %3943 = fdiv double %3941, %3942
  %3944 = getelementptr <8 x double>, ptr %3859, i64 %3890
  store double %3943, ptr %3944, align 8, !tbaa !43
  %3945 = fadd double %3889, %3941
  %3946 = add nsw i64 %3890, -1
  %3947 = icmp sgt i64 %3890, %3838
  br i1 %3947, label %3888, label %3861, !llvm.loop !124

3948:                                             ; preds = %3948, %3886
  %3949 = phi i64 [ %3884, %3886 ], [ %3964, %3948 ]
  %3950 = load double, ptr %3868, align 8, !tbaa !43
  %3951 = load double, ptr %3869, align 8, !tbaa !43
  %3952 = fmul double %3945, %3951
  %3953 = fdiv double %3950, %3952
  %3954 = getelementptr <8 x double>, ptr %3859, i64 %3949
  %3955 = load double, ptr %3954, align 8, !tbaa !43
  %3956 = fmul double %3955, %3953
  store double %3956, ptr %3954, align 8, !tbaa !43
  %3957 = load double, ptr %3868, align 8, !tbaa !43
  %3958 = load double, ptr %3869, align 8, !tbaa !43
  %3959 = fmul double %3945, %3958
  %3960 = fdiv double %3957, %3959
  %3961 = getelementptr <8 x double>, ptr %3887, i64 %3949
  %3962 = load double, ptr %3961, align 8, !tbaa !43
  %3963 = fmul double %3962, %3960
  store double %3963, ptr %3961, align 8, !tbaa !43
  %3964 = add nsw i64 %3949, 2
  %3965 = icmp eq i64 %3964, %3837
  br i1 %3965, label %3966, label %3948, !llvm.loop !125

3966:                                             ; preds = %3883, %3948, %3861, %3836, %3831
  %3967 = add nuw nsw i64 %3832, 1
  %3968 = icmp eq i64 %3967, 8
  br i1 %3968, label %3969, label %3831, !llvm.loop !126

3969:                                             ; preds = %3966, %3792
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  %3970 = load i64, ptr %141, align 16, !tbaa !21
  br label %3971

3971:                                             ; preds = %3704, %3969
  %3972 = phi i64 [ %3713, %3704 ], [ %3970, %3969 ]
  %3973 = getelementptr inbounds nuw i8, ptr %3707, i64 7560
  %3974 = load ptr, ptr %3973, align 8, !tbaa !58
  %3975 = getelementptr inbounds nuw i8, ptr %3707, i64 7568
  %3976 = load ptr, ptr %3975, align 16, !tbaa !47
  %3977 = getelementptr inbounds nuw i8, ptr %3707, i64 7576
  %3978 = load ptr, ptr %3977, align 8, !tbaa !57
  %3979 = icmp sgt i64 %3972, 0
  br i1 %3979, label %3990, label %3980

3980:                                             ; preds = %3990, %3971
  %3981 = load i64, ptr %142, align 8, !tbaa !22
  %3982 = icmp sgt i64 %3981, 0
  br i1 %3982, label %3983, label %4003

3983:                                             ; preds = %3980
  %3984 = getelementptr inbounds nuw i8, ptr %3707, i64 7744
  %3985 = getelementptr inbounds nuw i8, ptr %3707, i64 7736
  %3986 = getelementptr inbounds nuw i8, ptr %3707, i64 7728
  %3987 = getelementptr inbounds nuw i8, ptr %3707, i64 7696
  %3988 = getelementptr inbounds nuw i8, ptr %3707, i64 7688
  %3989 = getelementptr inbounds nuw i8, ptr %3707, i64 7680
  br label %4007

3990:                                             ; preds = %3971, %3990
  %3991 = phi i64 [ %4000, %3990 ], [ 0, %3971 ]
  %3992 = getelementptr inbounds nuw <8 x double>, ptr %3976, i64 %3991
  %3993 = load <8 x double>, ptr %3992, align 64, !tbaa !26
  %3994 = getelementptr inbounds nuw <8 x double>, ptr %3978, i64 %3991
  %3995 = load <8 x double>, ptr %3994, align 64, !tbaa !26
  %3996 = select <8 x i1> %3675, <8 x double> %3995, <8 x double> %3993
  store <8 x double> %3996, ptr %3994, align 64, !tbaa !26
  %3997 = getelementptr inbounds nuw <8 x double>, ptr %3974, i64 %3991
  %3998 = load <8 x double>, ptr %3997, align 64, !tbaa !26
  %3999 = select <8 x i1> %3675, <8 x double> %3993, <8 x double> %3998
  store <8 x double> %3999, ptr %3992, align 64, !tbaa !26
  %4000 = add nuw nsw i64 %3991, 1
  %4001 = load i64, ptr %141, align 16, !tbaa !21
  %4002 = icmp slt i64 %4000, %4001
  br i1 %4002, label %3990, label %3980, !llvm.loop !127

4003:                                             ; preds = %4007, %3980
  %4004 = getelementptr inbounds nuw i8, ptr %3707, i64 4480
  %4005 = getelementptr inbounds nuw i8, ptr %3707, i64 3712
  %4006 = getelementptr inbounds nuw i8, ptr %3707, i64 2944
  br label %4055

4007:                                             ; preds = %3983, %4007
  %4008 = phi i64 [ 0, %3983 ], [ %4037, %4007 ]
  %4009 = load ptr, ptr %3984, align 64, !tbaa !60
  %4010 = getelementptr inbounds nuw <8 x double>, ptr %4009, i64 %4008
  %4011 = load ptr, ptr %3985, align 8, !tbaa !50
  %4012 = getelementptr inbounds nuw <8 x double>, ptr %4011, i64 %4008
  %4013 = load <8 x double>, ptr %4012, align 64, !tbaa !26
  %4014 = load <8 x double>, ptr %4010, align 64, !tbaa !26
  %4015 = select <8 x i1> %3675, <8 x double> %4014, <8 x double> %4013
  store <8 x double> %4015, ptr %4010, align 64, !tbaa !26
  %4016 = load ptr, ptr %3985, align 8, !tbaa !50
  %4017 = getelementptr inbounds nuw <8 x double>, ptr %4016, i64 %4008
  %4018 = load ptr, ptr %3986, align 16, !tbaa !80
  %4019 = getelementptr inbounds nuw <8 x double>, ptr %4018, i64 %4008
  %4020 = load <8 x double>, ptr %4019, align 64, !tbaa !26
  %4021 = load <8 x double>, ptr %4017, align 64, !tbaa !26
  %4022 = select <8 x i1> %3675, <8 x double> %4021, <8 x double> %4020
  store <8 x double> %4022, ptr %4017, align 64, !tbaa !26
  %4023 = load ptr, ptr %3987, align 16, !tbaa !62
  %4024 = getelementptr inbounds nuw <8 x double>, ptr %4023, i64 %4008
  %4025 = load ptr, ptr %3988, align 8, !tbaa !51
  %4026 = getelementptr inbounds nuw <8 x double>, ptr %4025, i64 %4008
  %4027 = load <8 x double>, ptr %4026, align 64, !tbaa !26
  %4028 = load <8 x double>, ptr %4024, align 64, !tbaa !26
  %4029 = select <8 x i1> %3675, <8 x double> %4028, <8 x double> %4027
  store <8 x double> %4029, ptr %4024, align 64, !tbaa !26
  %4030 = load ptr, ptr %3988, align 8, !tbaa !51
  %4031 = getelementptr inbounds nuw <8 x double>, ptr %4030, i64 %4008
  %4032 = load ptr, ptr %3989, align 64, !tbaa !111
  %4033 = getelementptr inbounds nuw <8 x double>, ptr %4032, i64 %4008
  %4034 = load <8 x double>, ptr %4033, align 64, !tbaa !26
  %4035 = load <8 x double>, ptr %4031, align 64, !tbaa !26
  %4036 = select <8 x i1> %3675, <8 x double> %4035, <8 x double> %4034
  store <8 x double> %4036, ptr %4031, align 64, !tbaa !26
  %4037 = add nuw nsw i64 %4008, 1
  %4038 = load i64, ptr %142, align 8, !tbaa !22
  %4039 = icmp slt i64 %4037, %4038
  br i1 %4039, label %4007, label %4003, !llvm.loop !128

4040:                                             ; preds = %4055
  %4041 = getelementptr inbounds nuw i8, ptr %3707, i64 7424
  %4042 = getelementptr inbounds nuw i8, ptr %3707, i64 5696
  %4043 = load <8 x double>, ptr %4042, align 64, !tbaa !26
  %4044 = fcmp ogt <8 x double> %4043, zeroinitializer
  %4045 = load <8 x double>, ptr %160, align 64, !tbaa !26
  %4046 = fcmp une <8 x double> %4045, splat (double 2.000000e+00)
  %4047 = and <8 x i1> %4044, %4046
  %4048 = select <8 x i1> %4047, <8 x i64> %3615, <8 x i64> zeroinitializer
  %4049 = load <8 x i64>, ptr %4041, align 64, !tbaa !26
  %4050 = and <8 x i64> %4049, %3703
  %4051 = or <8 x i64> %4048, %4050
  store <8 x i64> %4051, ptr %4041, align 64, !tbaa !26
  %4052 = add nuw nsw i64 %3705, 1
  %4053 = load i64, ptr %178, align 8, !tbaa !20
  %4054 = icmp slt i64 %4052, %4053
  br i1 %4054, label %3704, label %4067, !llvm.loop !129

4055:                                             ; preds = %4003, %4055
  %4056 = phi i64 [ 0, %4003 ], [ %4065, %4055 ]
  %4057 = getelementptr inbounds nuw [12 x <8 x double>], ptr %4004, i64 0, i64 %4056
  %4058 = getelementptr inbounds nuw [12 x <8 x double>], ptr %4005, i64 0, i64 %4056
  %4059 = load <8 x double>, ptr %4058, align 64, !tbaa !26
  %4060 = load <8 x double>, ptr %4057, align 64, !tbaa !26
  %4061 = select <8 x i1> %3675, <8 x double> %4060, <8 x double> %4059
  store <8 x double> %4061, ptr %4057, align 64, !tbaa !26
  %4062 = getelementptr inbounds nuw [12 x <8 x double>], ptr %4006, i64 0, i64 %4056
  %4063 = load <8 x double>, ptr %4062, align 64, !tbaa !26
  %4064 = select <8 x i1> %3675, <8 x double> %4059, <8 x double> %4063
  store <8 x double> %4064, ptr %4058, align 64, !tbaa !26
  %4065 = add nuw nsw i64 %4056, 1
  %4066 = icmp eq i64 %4065, 12
  br i1 %4066, label %4040, label %4055, !llvm.loop !130

4067:                                             ; preds = %4040
  %4068 = load <8 x double>, ptr %182, align 64, !tbaa !26
  %4069 = load <8 x double>, ptr %197, align 64, !tbaa !26
  %4070 = load <8 x double>, ptr %233, align 64, !tbaa !26
  %4071 = load <8 x double>, ptr %181, align 64, !tbaa !26
  %4072 = load <8 x double>, ptr %183, align 64, !tbaa !26
  %4073 = fdiv <8 x double> %4070, %3329
  %4074 = icmp sgt i64 %4053, 0
  br label %4075

4075:                                             ; preds = %3674, %4067
  %4076 = phi <8 x double> [ %4073, %4067 ], [ %3339, %3674 ]
  %4077 = phi i1 [ %4074, %4067 ], [ false, %3674 ]
  %4078 = phi <8 x double> [ %4072, %4067 ], [ %3318, %3674 ]
  %4079 = phi <8 x double> [ %4071, %4067 ], [ %3603, %3674 ]
  %4080 = phi <8 x double> [ %4069, %4067 ], [ %3335, %3674 ]
  %4081 = phi <8 x double> [ %4068, %4067 ], [ %3333, %3674 ]
  %4082 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4083 = fadd <8 x double> %4082, %4081
  %4084 = select <8 x i1> %3675, <8 x double> %4082, <8 x double> %4083
  store <8 x double> %4084, ptr %158, align 64, !tbaa !26
  %4085 = load <8 x double>, ptr %173, align 64, !tbaa !26
  %4086 = select <8 x i1> %3675, <8 x double> %4085, <8 x double> %4081
  store <8 x double> %4086, ptr %173, align 64, !tbaa !26
  %4087 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %4088 = fadd <8 x double> %4087, splat (double 1.000000e+00)
  %4089 = select <8 x i1> %3675, <8 x double> %4087, <8 x double> %4088
  store <8 x double> %4089, ptr %145, align 64, !tbaa !26
  %4090 = load <8 x double>, ptr %147, align 64, !tbaa !26
  %4091 = fcmp olt <8 x double> %4090, %4081
  %4092 = select <8 x i1> %3675, <8 x i1> splat (i1 true), <8 x i1> %4091
  %4093 = select <8 x i1> %4092, <8 x double> %4090, <8 x double> %4081
  store <8 x double> %4093, ptr %147, align 64, !tbaa !26
  %4094 = fcmp une <8 x double> %4080, zeroinitializer
  %4095 = fcmp ueq <8 x double> %3328, zeroinitializer
  %4096 = or <8 x i1> %4095, %4094
  %4097 = fcmp olt <8 x double> %4076, splat (double 1.800000e+00)
  %4098 = select <8 x i1> %4097, <8 x double> %4076, <8 x double> splat (double 1.800000e+00)
  %4099 = select <8 x i1> %4096, <8 x double> splat (double 1.800000e+00), <8 x double> %4098
  %4100 = fcmp ogt <8 x double> %4099, splat (double 2.000000e-01)
  %4101 = select <8 x i1> %4100, <8 x double> %4099, <8 x double> splat (double 2.000000e-01)
  %4102 = fmul <8 x double> %4081, %4101
  %4103 = fmul <8 x double> %4081, splat (double 4.000000e+00)
  %4104 = fcmp olt <8 x double> %4079, %4103
  %4105 = select <8 x i1> %4104, <8 x double> %4079, <8 x double> %4103
  %4106 = fcmp ogt <8 x double> %4102, %4105
  %4107 = select <8 x i1> %4106, <8 x double> %4102, <8 x double> %4105
  %4108 = select <8 x i1> %3675, <8 x double> %4079, <8 x double> zeroinitializer
  store <8 x double> %4108, ptr %181, align 64, !tbaa !26
  %4109 = select <8 x i1> %3675, <8 x double> %4078, <8 x double> zeroinitializer
  store <8 x double> %4109, ptr %183, align 64, !tbaa !26
  %4110 = load <8 x i64>, ptr %174, align 64, !tbaa !26
  %4111 = and <8 x i64> %4110, %3703
  store <8 x i64> %4111, ptr %174, align 64, !tbaa !26
  %4112 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %4113 = and <8 x i64> %4112, %3703
  store <8 x i64> %4113, ptr %175, align 64, !tbaa !26
  %4114 = load <8 x double>, ptr %223, align 64, !tbaa !26
  %4115 = load <8 x double>, ptr %168, align 64, !tbaa !26
  %4116 = select <8 x i1> %3675, <8 x double> %4115, <8 x double> %4114
  store <8 x double> %4116, ptr %168, align 64, !tbaa !26
  br i1 %4077, label %4117, label %4581

4117:                                             ; preds = %4075, %4574
  %4118 = phi i64 [ %4576, %4574 ], [ 0, %4075 ]
  %4119 = phi <8 x double> [ %4575, %4574 ], [ %4107, %4075 ]
  %4120 = load ptr, ptr %151, align 8, !tbaa !28
  %4121 = getelementptr inbounds nuw %struct.Piece, ptr %4120, i64 %4118
  %4122 = getelementptr inbounds nuw i8, ptr %4121, i64 3776
  %4123 = load <8 x double>, ptr %4122, align 64, !tbaa !26
  %4124 = getelementptr inbounds nuw i8, ptr %4121, i64 1472
  %4125 = load <8 x double>, ptr %4124, align 64, !tbaa !26
  %4126 = fmul <8 x double> %4125, splat (double 1.001000e+00)
  %4127 = fcmp ole <8 x double> %4123, %4126
  %4128 = getelementptr inbounds nuw i8, ptr %4121, i64 1600
  %4129 = load <8 x double>, ptr %4128, align 64, !tbaa !26
  %4130 = getelementptr inbounds nuw i8, ptr %4121, i64 4032
  %4131 = load <8 x double>, ptr %4130, align 64, !tbaa !26
  %4132 = fsub <8 x double> %4129, %4131
  %4133 = fmul <8 x double> %4129, splat (double 1.000000e-04)
  %4134 = fcmp ole <8 x double> %4132, %4133
  %4135 = getelementptr inbounds nuw i8, ptr %4121, i64 7360
  %4136 = load <8 x i64>, ptr %4135, align 64, !tbaa !26
  %4137 = and <8 x i64> %4136, %3615
  %4138 = getelementptr inbounds nuw i8, ptr %4121, i64 7296
  %4139 = load <8 x double>, ptr %4138, align 64, !tbaa !26
  %4140 = fcmp oeq <8 x double> %4139, zeroinitializer
  %4141 = and <8 x i1> %4127, %4140
  %4142 = fcmp oeq <8 x double> %4139, splat (double 1.000000e+00)
  %4143 = and <8 x i1> %4134, %4142
  %4144 = or <8 x i1> %4141, %4143
  %4145 = select <8 x i1> %4144, <8 x i64> %4137, <8 x i64> zeroinitializer
  %4146 = fadd <8 x double> %4139, splat (double 1.000000e+00)
  %4147 = icmp eq <8 x i64> %4145, zeroinitializer
  %4148 = select <8 x i1> %4147, <8 x double> %4139, <8 x double> %4146
  store <8 x double> %4148, ptr %4138, align 64, !tbaa !26
  %4149 = getelementptr inbounds nuw i8, ptr %4121, i64 7424
  %4150 = load <8 x i64>, ptr %4149, align 64, !tbaa !26
  %4151 = or <8 x i64> %4145, %4150
  store <8 x i64> %4151, ptr %4149, align 64, !tbaa !26
  %4152 = getelementptr inbounds nuw i8, ptr %4121, i64 896
  %4153 = load <8 x double>, ptr %4152, align 64, !tbaa !26
  %4154 = getelementptr inbounds nuw i8, ptr %4121, i64 5632
  %4155 = load <8 x double>, ptr %4154, align 64, !tbaa !26
  %4156 = getelementptr inbounds nuw i8, ptr %4121, i64 5696
  %4157 = load <8 x double>, ptr %4156, align 64, !tbaa !26
  %4158 = fadd <8 x double> %4155, %4157
  %4159 = fcmp ogt <8 x double> %4158, zeroinitializer
  %4160 = xor <8 x i64> %4136, splat (i64 -1)
  %4161 = and <8 x i64> %3615, %4160
  %4162 = fcmp une <8 x double> %4153, zeroinitializer
  %4163 = or <8 x i1> %4162, %4159
  %4164 = getelementptr inbounds nuw i8, ptr %4121, i64 3840
  %4165 = load <8 x double>, ptr %4164, align 64, !tbaa !26
  %4166 = fmul <8 x double> %4153, splat (double 1.000000e-03)
  %4167 = fcmp ogt <8 x double> %4166, splat (double 0x3E7AD7F29ABCAF48)
  %4168 = select <8 x i1> %4167, <8 x double> %4166, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4169 = fcmp ole <8 x double> %4165, %4168
  %4170 = select <8 x i1> %4169, <8 x i1> %4163, <8 x i1> zeroinitializer
  %4171 = select <8 x i1> %4170, <8 x i64> %4161, <8 x i64> zeroinitializer
  %4172 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4171)
  %4173 = icmp eq i64 %4172, 0
  br i1 %4173, label %4574, label %4174

4174:                                             ; preds = %4117
  %4175 = load i64, ptr %141, align 16, !tbaa !21
  %4176 = load i64, ptr %142, align 8, !tbaa !22
  %4177 = getelementptr inbounds nuw i8, ptr %4121, i64 3712
  %4178 = getelementptr inbounds nuw i8, ptr %4121, i64 4416
  %4179 = load <8 x double>, ptr %4178, align 64, !tbaa !26
  %4180 = getelementptr inbounds nuw i8, ptr %4121, i64 5568
  %4181 = load <8 x double>, ptr %4180, align 64, !tbaa !26
  %4182 = getelementptr inbounds nuw i8, ptr %4121, i64 832
  %4183 = load <8 x double>, ptr %4182, align 64, !tbaa !26
  %4184 = getelementptr inbounds nuw i8, ptr %4121, i64 7600
  %4185 = load ptr, ptr %4184, align 16, !tbaa !48
  %4186 = add nsw i64 %4175, -1
  %4187 = getelementptr inbounds <8 x double>, ptr %4185, i64 %4186
  %4188 = load <8 x double>, ptr %4187, align 64, !tbaa !26
  %4189 = fmul <8 x double> %4183, %4188
  %4190 = fneg <8 x double> %4165
  %4191 = fdiv <8 x double> %4190, %4189
  %4192 = fcmp ogt <8 x double> %4191, splat (double 0x3E7AD7F29ABCAF48)
  %4193 = select <8 x i1> %4192, <8 x double> %4191, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4194 = load <8 x double>, ptr %4121, align 64, !tbaa !26
  %4195 = fsub <8 x double> %4194, %4193
  %4196 = getelementptr inbounds nuw i8, ptr %4121, i64 2560
  %4197 = load <8 x double>, ptr %4196, align 64, !tbaa !26
  %4198 = getelementptr inbounds nuw i8, ptr %4121, i64 2624
  %4199 = load <8 x double>, ptr %4198, align 64, !tbaa !26
  %4200 = getelementptr inbounds nuw i8, ptr %4121, i64 2688
  %4201 = load <8 x double>, ptr %4200, align 64, !tbaa !26
  %4202 = getelementptr inbounds nuw i8, ptr %4121, i64 2752
  %4203 = load <8 x double>, ptr %4202, align 64, !tbaa !26
  %4204 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4195, <8 x double> %4203, <8 x double> %4201)
  %4205 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4195, <8 x double> %4204, <8 x double> %4199)
  %4206 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4195, <8 x double> %4205, <8 x double> %4197)
  %4207 = fsub <8 x double> %4179, %4206
  %4208 = getelementptr inbounds nuw i8, ptr %4121, i64 7568
  %4209 = load ptr, ptr %4208, align 16, !tbaa !47
  %4210 = getelementptr inbounds <8 x double>, ptr %4209, i64 %4186
  %4211 = load <8 x double>, ptr %4210, align 64, !tbaa !26
  %4212 = getelementptr inbounds nuw i8, ptr %4121, i64 7552
  %4213 = load i64, ptr %4212, align 64, !tbaa !31
  %4214 = icmp sgt i64 %4175, %4213
  br i1 %4214, label %4223, label %4215

4215:                                             ; preds = %4174
  %4216 = getelementptr inbounds nuw i8, ptr %4121, i64 640
  %4217 = load <8 x double>, ptr %4216, align 64, !tbaa !26
  %4218 = getelementptr inbounds nuw i8, ptr %4121, i64 7576
  %4219 = load ptr, ptr %4218, align 8, !tbaa !57
  %4220 = getelementptr inbounds <8 x double>, ptr %4219, i64 %4186
  %4221 = load <8 x double>, ptr %4220, align 64, !tbaa !26
  %4222 = fmul <8 x double> %4221, %4217
  br label %4243

4223:                                             ; preds = %4174
  %4224 = getelementptr inbounds nuw i8, ptr %4121, i64 384
  %4225 = load <8 x double>, ptr %4224, align 64, !tbaa !26
  %4226 = getelementptr inbounds nuw i8, ptr %4121, i64 448
  %4227 = load <8 x double>, ptr %4226, align 64, !tbaa !26
  %4228 = getelementptr inbounds nuw i8, ptr %4121, i64 512
  %4229 = load <8 x double>, ptr %4228, align 64, !tbaa !26
  %4230 = fmul <8 x double> %4211, %4229
  %4231 = fmul <8 x double> %4230, splat (double 0x3FD5555555555555)
  %4232 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4227, <8 x double> splat (double 5.000000e-01), <8 x double> %4231)
  %4233 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4211, <8 x double> %4232, <8 x double> %4225)
  %4234 = getelementptr inbounds nuw i8, ptr %4121, i64 7576
  %4235 = load ptr, ptr %4234, align 8, !tbaa !57
  %4236 = getelementptr inbounds <8 x double>, ptr %4235, i64 %4186
  %4237 = load <8 x double>, ptr %4236, align 64, !tbaa !26
  %4238 = fmul <8 x double> %4237, %4229
  %4239 = fmul <8 x double> %4238, splat (double 0x3FD5555555555555)
  %4240 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4227, <8 x double> splat (double 5.000000e-01), <8 x double> %4239)
  %4241 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4237, <8 x double> %4240, <8 x double> %4225)
  %4242 = fmul <8 x double> %4237, %4241
  br label %4243

4243:                                             ; preds = %4223, %4215
  %4244 = phi ptr [ %4235, %4223 ], [ %4219, %4215 ]
  %4245 = phi <8 x double> [ %4233, %4223 ], [ %4217, %4215 ]
  %4246 = phi <8 x double> [ %4242, %4223 ], [ %4222, %4215 ]
  %4247 = phi ptr [ %4234, %4223 ], [ %4218, %4215 ]
  %4248 = sitofp i64 %4176 to double
  %4249 = insertelement <8 x double> poison, double %4248, i64 0
  %4250 = shufflevector <8 x double> %4249, <8 x double> poison, <8 x i32> zeroinitializer
  %4251 = fmul <8 x double> %4211, %4245
  %4252 = fdiv <8 x double> %4193, %4250
  %4253 = getelementptr i8, ptr %4209, i64 -64
  %4254 = getelementptr i8, ptr %4185, i64 -64
  %4255 = icmp sgt i64 %4175, 0
  br i1 %4255, label %4256, label %4357

4256:                                             ; preds = %4243
  %4257 = fmul <8 x double> %4211, %4245
  %4258 = getelementptr inbounds nuw i8, ptr %4121, i64 640
  %4259 = getelementptr inbounds nuw i8, ptr %4121, i64 384
  %4260 = getelementptr inbounds nuw i8, ptr %4121, i64 448
  %4261 = getelementptr inbounds nuw i8, ptr %4121, i64 512
  %4262 = getelementptr inbounds nuw i8, ptr %4121, i64 1536
  %4263 = getelementptr inbounds nuw i8, ptr %4121, i64 7648
  %4264 = icmp eq <8 x i64> %4171, zeroinitializer
  br label %4265

4265:                                             ; preds = %4256, %4344
  %4266 = phi <8 x double> [ %4211, %4256 ], [ %4325, %4344 ]
  %4267 = phi <8 x double> [ %4257, %4256 ], [ %4324, %4344 ]
  %4268 = phi <8 x double> [ %4206, %4256 ], [ %4326, %4344 ]
  %4269 = phi <8 x double> [ %4188, %4256 ], [ %4327, %4344 ]
  %4270 = phi i64 [ %4186, %4256 ], [ %4350, %4344 ]
  %4271 = icmp eq i64 %4270, 0
  br i1 %4271, label %4272, label %4276

4272:                                             ; preds = %4265
  %4273 = fdiv <8 x double> zeroinitializer, %4268
  %4274 = fsub <8 x double> %4267, %4267
  %4275 = fmul <8 x double> %4273, %4274
  br label %4321

4276:                                             ; preds = %4265
  %4277 = getelementptr <8 x double>, ptr %4253, i64 %4270
  %4278 = load <8 x double>, ptr %4277, align 64, !tbaa !26
  %4279 = load i64, ptr %4212, align 64, !tbaa !31
  %4280 = icmp sgt i64 %4270, %4279
  br i1 %4280, label %4283, label %4281

4281:                                             ; preds = %4276
  %4282 = load <8 x double>, ptr %4258, align 64, !tbaa !26
  br label %4291

4283:                                             ; preds = %4276
  %4284 = load <8 x double>, ptr %4259, align 64, !tbaa !26
  %4285 = load <8 x double>, ptr %4260, align 64, !tbaa !26
  %4286 = load <8 x double>, ptr %4261, align 64, !tbaa !26
  %4287 = fmul <8 x double> %4278, %4286
  %4288 = fmul <8 x double> %4287, splat (double 0x3FD5555555555555)
  %4289 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4285, <8 x double> splat (double 5.000000e-01), <8 x double> %4288)
  %4290 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4278, <8 x double> %4289, <8 x double> %4284)
  br label %4291

4291:                                             ; preds = %4281, %4283
  %4292 = phi <8 x double> [ %4290, %4283 ], [ %4282, %4281 ]
  %4293 = fmul <8 x double> %4278, %4292
  %4294 = icmp slt i64 %4270, %4279
  br i1 %4294, label %4295, label %4302

4295:                                             ; preds = %4291
  %4296 = load ptr, ptr %4263, align 32, !tbaa !72
  %4297 = getelementptr inbounds nuw <8 x double>, ptr %4296, i64 %4270
  %4298 = load <8 x double>, ptr %4297, align 64, !tbaa !26
  %4299 = load <8 x double>, ptr %4262, align 64, !tbaa !26
  %4300 = fmul <8 x double> %4298, %4299
  %4301 = fmul <8 x double> %4298, %4299
  br label %4311

4302:                                             ; preds = %4291
  %4303 = load <8 x double>, ptr %4262, align 64, !tbaa !26
  %4304 = load ptr, ptr %4263, align 32, !tbaa !72
  %4305 = getelementptr inbounds nuw <8 x double>, ptr %4304, i64 %4270
  %4306 = load <8 x double>, ptr %4305, align 64, !tbaa !26
  %4307 = fsub <8 x double> %4206, %4303
  %4308 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4306, <8 x double> %4307, <8 x double> %4303)
  %4309 = fsub <8 x double> %4179, %4303
  %4310 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4306, <8 x double> %4309, <8 x double> %4303)
  br label %4311

4311:                                             ; preds = %4302, %4295
  %4312 = phi <8 x double> [ %4300, %4295 ], [ %4308, %4302 ]
  %4313 = phi <8 x double> [ %4301, %4295 ], [ %4310, %4302 ]
  %4314 = fsub <8 x double> %4313, %4312
  %4315 = fsub <8 x double> %4268, %4312
  %4316 = fdiv <8 x double> %4314, %4315
  %4317 = fsub <8 x double> %4293, %4267
  %4318 = fmul <8 x double> %4317, %4316
  %4319 = getelementptr <8 x double>, ptr %4254, i64 %4270
  %4320 = load <8 x double>, ptr %4319, align 64, !tbaa !26
  br label %4321

4321:                                             ; preds = %4311, %4272
  %4322 = phi <8 x double> [ %4318, %4311 ], [ %4275, %4272 ]
  %4323 = phi <8 x double> [ %4316, %4311 ], [ %4273, %4272 ]
  %4324 = phi <8 x double> [ %4293, %4311 ], [ %4267, %4272 ]
  %4325 = phi <8 x double> [ %4278, %4311 ], [ %4266, %4272 ]
  %4326 = phi <8 x double> [ %4312, %4311 ], [ zeroinitializer, %4272 ]
  %4327 = phi <8 x double> [ %4320, %4311 ], [ %4269, %4272 ]
  %4328 = getelementptr inbounds nuw <8 x double>, ptr %4185, i64 %4270
  %4329 = fsub <8 x double> %4327, %4269
  %4330 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4329, <8 x double> %4323, <8 x double> %4269)
  %4331 = load <8 x double>, ptr %4328, align 64, !tbaa !26
  %4332 = select <8 x i1> %4264, <8 x double> %4331, <8 x double> %4330
  store <8 x double> %4332, ptr %4328, align 64, !tbaa !26
  %4333 = getelementptr inbounds nuw <8 x double>, ptr %4209, i64 %4270
  %4334 = load i64, ptr %4212, align 64, !tbaa !31
  %4335 = icmp slt i64 %4270, %4334
  br i1 %4335, label %4336, label %4338

4336:                                             ; preds = %4321
  %4337 = load <8 x double>, ptr %4258, align 64, !tbaa !26
  br label %4344

4338:                                             ; preds = %4321
  %4339 = load <8 x double>, ptr %4259, align 64, !tbaa !26
  %4340 = load <8 x double>, ptr %4260, align 64, !tbaa !26
  %4341 = load <8 x double>, ptr %4261, align 64, !tbaa !26
  %4342 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4266, <8 x double> %4341, <8 x double> %4340)
  %4343 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4266, <8 x double> %4342, <8 x double> %4339)
  br label %4344

4344:                                             ; preds = %4338, %4336
  %4345 = phi <8 x double> [ %4337, %4336 ], [ %4343, %4338 ]
  %4346 = fdiv <8 x double> %4322, %4345
  %4347 = fadd <8 x double> %4266, %4346
  %4348 = load <8 x double>, ptr %4333, align 64, !tbaa !26
  %4349 = select <8 x i1> %4264, <8 x double> %4348, <8 x double> %4347
  store <8 x double> %4349, ptr %4333, align 64, !tbaa !26
  %4350 = add nsw i64 %4270, -1
  %4351 = icmp sgt i64 %4270, 0
  br i1 %4351, label %4265, label %4352, !llvm.loop !131

4352:                                             ; preds = %4344
  %4353 = load ptr, ptr %4247, align 8, !tbaa !57
  %4354 = load i64, ptr %141, align 16, !tbaa !21
  %4355 = load i64, ptr %4212, align 64, !tbaa !31
  %4356 = add nsw i64 %4354, -1
  br label %4357

4357:                                             ; preds = %4352, %4243
  %4358 = phi i64 [ %4356, %4352 ], [ %4186, %4243 ]
  %4359 = phi i64 [ %4355, %4352 ], [ %4213, %4243 ]
  %4360 = phi i64 [ %4354, %4352 ], [ %4175, %4243 ]
  %4361 = phi ptr [ %4353, %4352 ], [ %4244, %4243 ]
  %4362 = getelementptr inbounds <8 x double>, ptr %4361, i64 %4358
  %4363 = load <8 x double>, ptr %4362, align 64, !tbaa !26
  %4364 = icmp sgt i64 %4360, %4359
  br i1 %4364, label %4368, label %4365

4365:                                             ; preds = %4357
  %4366 = getelementptr inbounds nuw i8, ptr %4121, i64 640
  %4367 = load <8 x double>, ptr %4366, align 64, !tbaa !26
  br label %4379

4368:                                             ; preds = %4357
  %4369 = getelementptr inbounds nuw i8, ptr %4121, i64 384
  %4370 = load <8 x double>, ptr %4369, align 64, !tbaa !26
  %4371 = getelementptr inbounds nuw i8, ptr %4121, i64 448
  %4372 = load <8 x double>, ptr %4371, align 64, !tbaa !26
  %4373 = getelementptr inbounds nuw i8, ptr %4121, i64 512
  %4374 = load <8 x double>, ptr %4373, align 64, !tbaa !26
  %4375 = fmul <8 x double> %4363, %4374
  %4376 = fmul <8 x double> %4375, splat (double 0x3FD5555555555555)
  %4377 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4372, <8 x double> splat (double 5.000000e-01), <8 x double> %4376)
  %4378 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4363, <8 x double> %4377, <8 x double> %4370)
  br label %4379

4379:                                             ; preds = %4368, %4365
  %4380 = phi <8 x double> [ %4367, %4365 ], [ %4378, %4368 ]
  %4381 = getelementptr i8, ptr %4361, i64 -64
  %4382 = icmp sgt i64 %4360, 0
  br i1 %4382, label %4383, label %4392

4383:                                             ; preds = %4379
  %4384 = fmul <8 x double> %4363, %4380
  %4385 = getelementptr inbounds nuw i8, ptr %4121, i64 640
  %4386 = getelementptr inbounds nuw i8, ptr %4121, i64 384
  %4387 = getelementptr inbounds nuw i8, ptr %4121, i64 448
  %4388 = getelementptr inbounds nuw i8, ptr %4121, i64 512
  %4389 = getelementptr inbounds nuw i8, ptr %4121, i64 1536
  %4390 = getelementptr inbounds nuw i8, ptr %4121, i64 7648
  %4391 = icmp eq <8 x i64> %4171, zeroinitializer
  br label %4400

4392:                                             ; preds = %4464, %4379
  %4393 = icmp sgt i64 %4176, 0
  br i1 %4393, label %4394, label %4472

4394:                                             ; preds = %4392
  %4395 = getelementptr inbounds nuw i8, ptr %4121, i64 7736
  %4396 = icmp eq <8 x i64> %4171, zeroinitializer
  %4397 = getelementptr inbounds nuw i8, ptr %4121, i64 7744
  %4398 = getelementptr inbounds nuw i8, ptr %4121, i64 7688
  %4399 = getelementptr inbounds nuw i8, ptr %4121, i64 7696
  br label %4543

4400:                                             ; preds = %4383, %4464
  %4401 = phi <8 x double> [ %4363, %4383 ], [ %4447, %4464 ]
  %4402 = phi <8 x double> [ %4384, %4383 ], [ %4448, %4464 ]
  %4403 = phi <8 x double> [ %4206, %4383 ], [ %4446, %4464 ]
  %4404 = phi i64 [ %4358, %4383 ], [ %4470, %4464 ]
  %4405 = icmp eq i64 %4404, 0
  %4406 = load i64, ptr %4212, align 64, !tbaa !31
  br i1 %4405, label %4445, label %4407

4407:                                             ; preds = %4400
  %4408 = getelementptr <8 x double>, ptr %4381, i64 %4404
  %4409 = load <8 x double>, ptr %4408, align 64, !tbaa !26
  %4410 = icmp sgt i64 %4404, %4406
  br i1 %4410, label %4413, label %4411

4411:                                             ; preds = %4407
  %4412 = load <8 x double>, ptr %4385, align 64, !tbaa !26
  br label %4421

4413:                                             ; preds = %4407
  %4414 = load <8 x double>, ptr %4386, align 64, !tbaa !26
  %4415 = load <8 x double>, ptr %4387, align 64, !tbaa !26
  %4416 = load <8 x double>, ptr %4388, align 64, !tbaa !26
  %4417 = fmul <8 x double> %4409, %4416
  %4418 = fmul <8 x double> %4417, splat (double 0x3FD5555555555555)
  %4419 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4415, <8 x double> splat (double 5.000000e-01), <8 x double> %4418)
  %4420 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4409, <8 x double> %4419, <8 x double> %4414)
  br label %4421

4421:                                             ; preds = %4411, %4413
  %4422 = phi <8 x double> [ %4420, %4413 ], [ %4412, %4411 ]
  %4423 = fmul <8 x double> %4409, %4422
  %4424 = icmp slt i64 %4404, %4406
  br i1 %4424, label %4425, label %4432

4425:                                             ; preds = %4421
  %4426 = load ptr, ptr %4390, align 32, !tbaa !72
  %4427 = getelementptr inbounds nuw <8 x double>, ptr %4426, i64 %4404
  %4428 = load <8 x double>, ptr %4427, align 64, !tbaa !26
  %4429 = load <8 x double>, ptr %4389, align 64, !tbaa !26
  %4430 = fmul <8 x double> %4428, %4429
  %4431 = fmul <8 x double> %4428, %4429
  br label %4441

4432:                                             ; preds = %4421
  %4433 = load <8 x double>, ptr %4389, align 64, !tbaa !26
  %4434 = load ptr, ptr %4390, align 32, !tbaa !72
  %4435 = getelementptr inbounds nuw <8 x double>, ptr %4434, i64 %4404
  %4436 = load <8 x double>, ptr %4435, align 64, !tbaa !26
  %4437 = fsub <8 x double> %4206, %4433
  %4438 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4436, <8 x double> %4437, <8 x double> %4433)
  %4439 = fsub <8 x double> %4179, %4433
  %4440 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4436, <8 x double> %4439, <8 x double> %4433)
  br label %4441

4441:                                             ; preds = %4432, %4425
  %4442 = phi <8 x double> [ %4430, %4425 ], [ %4438, %4432 ]
  %4443 = phi <8 x double> [ %4431, %4425 ], [ %4440, %4432 ]
  %4444 = fsub <8 x double> %4443, %4442
  br label %4445

4445:                                             ; preds = %4400, %4441
  %4446 = phi <8 x double> [ %4442, %4441 ], [ zeroinitializer, %4400 ]
  %4447 = phi <8 x double> [ %4409, %4441 ], [ %4401, %4400 ]
  %4448 = phi <8 x double> [ %4423, %4441 ], [ %4402, %4400 ]
  %4449 = phi <8 x double> [ %4444, %4441 ], [ zeroinitializer, %4400 ]
  %4450 = fsub <8 x double> %4403, %4446
  %4451 = fdiv <8 x double> %4449, %4450
  %4452 = fsub <8 x double> %4448, %4402
  %4453 = fmul <8 x double> %4452, %4451
  %4454 = getelementptr inbounds nuw <8 x double>, ptr %4361, i64 %4404
  %4455 = icmp slt i64 %4404, %4406
  br i1 %4455, label %4456, label %4458

4456:                                             ; preds = %4445
  %4457 = load <8 x double>, ptr %4385, align 64, !tbaa !26
  br label %4464

4458:                                             ; preds = %4445
  %4459 = load <8 x double>, ptr %4386, align 64, !tbaa !26
  %4460 = load <8 x double>, ptr %4387, align 64, !tbaa !26
  %4461 = load <8 x double>, ptr %4388, align 64, !tbaa !26
  %4462 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4401, <8 x double> %4461, <8 x double> %4460)
  %4463 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4401, <8 x double> %4462, <8 x double> %4459)
  br label %4464

4464:                                             ; preds = %4458, %4456
  %4465 = phi <8 x double> [ %4457, %4456 ], [ %4463, %4458 ]
  %4466 = fdiv <8 x double> %4453, %4465
  %4467 = fadd <8 x double> %4401, %4466
  %4468 = load <8 x double>, ptr %4454, align 64, !tbaa !26
  %4469 = select <8 x i1> %4391, <8 x double> %4468, <8 x double> %4467
  store <8 x double> %4469, ptr %4454, align 64, !tbaa !26
  %4470 = add nsw i64 %4404, -1
  %4471 = icmp sgt i64 %4404, 0
  br i1 %4471, label %4400, label %4392, !llvm.loop !131

4472:                                             ; preds = %4543, %4392
  %4473 = getelementptr inbounds nuw i8, ptr %4121, i64 7736
  %4474 = load ptr, ptr %4473, align 8, !tbaa !50
  %4475 = getelementptr inbounds <8 x double>, ptr %4474, i64 %4176
  %4476 = getelementptr inbounds nuw i8, ptr %4121, i64 1408
  %4477 = load <8 x double>, ptr %4476, align 64, !tbaa !26
  %4478 = load <8 x double>, ptr %4475, align 64, !tbaa !26
  %4479 = icmp eq <8 x i64> %4171, zeroinitializer
  %4480 = select <8 x i1> %4479, <8 x double> %4478, <8 x double> %4477
  store <8 x double> %4480, ptr %4475, align 64, !tbaa !26
  %4481 = getelementptr inbounds nuw i8, ptr %4121, i64 7744
  %4482 = load ptr, ptr %4481, align 64, !tbaa !60
  %4483 = getelementptr inbounds <8 x double>, ptr %4482, i64 %4176
  %4484 = load <8 x double>, ptr %4476, align 64, !tbaa !26
  %4485 = load <8 x double>, ptr %4483, align 64, !tbaa !26
  %4486 = select <8 x i1> %4479, <8 x double> %4485, <8 x double> %4484
  store <8 x double> %4486, ptr %4483, align 64, !tbaa !26
  %4487 = getelementptr inbounds nuw i8, ptr %4121, i64 4480
  %4488 = fneg <8 x double> %4207
  %4489 = getelementptr inbounds nuw i8, ptr %4121, i64 768
  %4490 = load <8 x double>, ptr %4177, align 64, !tbaa !26
  %4491 = select <8 x i1> %4479, <8 x double> %4490, <8 x double> %4195
  store <8 x double> %4491, ptr %4177, align 64, !tbaa !26
  %4492 = getelementptr inbounds nuw i8, ptr %4121, i64 3776
  %4493 = load <8 x double>, ptr %4492, align 64, !tbaa !26
  %4494 = select <8 x i1> %4479, <8 x double> %4493, <8 x double> %4206
  store <8 x double> %4494, ptr %4492, align 64, !tbaa !26
  %4495 = getelementptr inbounds nuw i8, ptr %4121, i64 4416
  %4496 = load <8 x double>, ptr %4495, align 64, !tbaa !26
  %4497 = select <8 x i1> %4479, <8 x double> %4496, <8 x double> %4206
  store <8 x double> %4497, ptr %4495, align 64, !tbaa !26
  %4498 = getelementptr inbounds nuw i8, ptr %4121, i64 3904
  %4499 = load <8 x double>, ptr %4498, align 64, !tbaa !26
  %4500 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4488, <8 x double> %4189, <8 x double> %4499)
  %4501 = select <8 x i1> %4479, <8 x double> %4499, <8 x double> %4500
  store <8 x double> %4501, ptr %4498, align 64, !tbaa !26
  %4502 = getelementptr inbounds nuw i8, ptr %4121, i64 3840
  %4503 = load <8 x double>, ptr %4502, align 64, !tbaa !26
  %4504 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4207, <8 x double> %4189, <8 x double> %4503)
  %4505 = select <8 x i1> %4479, <8 x double> %4503, <8 x double> %4504
  store <8 x double> %4505, ptr %4502, align 64, !tbaa !26
  %4506 = getelementptr inbounds nuw i8, ptr %4121, i64 4160
  %4507 = load <8 x double>, ptr %4506, align 64, !tbaa !26
  %4508 = load <8 x double>, ptr %4489, align 64, !tbaa !26
  %4509 = fneg <8 x double> %4508
  %4510 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4509, <8 x double> %4181, <8 x double> %4251)
  %4511 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4207, <8 x double> %4510, <8 x double> %4507)
  %4512 = select <8 x i1> %4479, <8 x double> %4507, <8 x double> %4511
  store <8 x double> %4512, ptr %4506, align 64, !tbaa !26
  %4513 = load <8 x double>, ptr %4487, align 64, !tbaa !26
  %4514 = select <8 x i1> %4479, <8 x double> %4513, <8 x double> %4195
  store <8 x double> %4514, ptr %4487, align 64, !tbaa !26
  %4515 = getelementptr inbounds nuw i8, ptr %4121, i64 4544
  %4516 = load <8 x double>, ptr %4515, align 64, !tbaa !26
  %4517 = select <8 x i1> %4479, <8 x double> %4516, <8 x double> %4206
  store <8 x double> %4517, ptr %4515, align 64, !tbaa !26
  %4518 = getelementptr inbounds nuw i8, ptr %4121, i64 5184
  %4519 = load <8 x double>, ptr %4518, align 64, !tbaa !26
  %4520 = select <8 x i1> %4479, <8 x double> %4519, <8 x double> %4206
  store <8 x double> %4520, ptr %4518, align 64, !tbaa !26
  %4521 = getelementptr inbounds nuw i8, ptr %4121, i64 4672
  %4522 = load <8 x double>, ptr %4521, align 64, !tbaa !26
  %4523 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4488, <8 x double> %4189, <8 x double> %4522)
  %4524 = select <8 x i1> %4479, <8 x double> %4522, <8 x double> %4523
  store <8 x double> %4524, ptr %4521, align 64, !tbaa !26
  %4525 = getelementptr inbounds nuw i8, ptr %4121, i64 4608
  %4526 = load <8 x double>, ptr %4525, align 64, !tbaa !26
  %4527 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4207, <8 x double> %4189, <8 x double> %4526)
  %4528 = select <8 x i1> %4479, <8 x double> %4526, <8 x double> %4527
  store <8 x double> %4528, ptr %4525, align 64, !tbaa !26
  %4529 = getelementptr inbounds nuw i8, ptr %4121, i64 4928
  %4530 = load <8 x double>, ptr %4529, align 64, !tbaa !26
  %4531 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4509, <8 x double> %4181, <8 x double> %4246)
  %4532 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4207, <8 x double> %4531, <8 x double> %4530)
  %4533 = select <8 x i1> %4479, <8 x double> %4530, <8 x double> %4532
  store <8 x double> %4533, ptr %4529, align 64, !tbaa !26
  %4534 = load <8 x i64>, ptr %4135, align 64, !tbaa !26
  %4535 = or <8 x i64> %4534, %4171
  store <8 x i64> %4535, ptr %4135, align 64, !tbaa !26
  %4536 = load <8 x double>, ptr %237, align 64, !tbaa !26
  %4537 = fmul <8 x double> %4536, splat (double 4.000000e+01)
  %4538 = fcmp olt <8 x double> %4119, %4537
  %4539 = select <8 x i1> %4538, <8 x double> %4119, <8 x double> %4537
  %4540 = icmp ne <8 x i64> %4171, zeroinitializer
  %4541 = select <8 x i1> %4162, <8 x i1> %4540, <8 x i1> zeroinitializer
  %4542 = select <8 x i1> %4541, <8 x double> %4539, <8 x double> %4119
  br label %4574

4543:                                             ; preds = %4394, %4543
  %4544 = phi i64 [ 0, %4394 ], [ %4572, %4543 ]
  %4545 = uitofp nneg i64 %4544 to double
  %4546 = insertelement <8 x double> poison, double %4545, i64 0
  %4547 = shufflevector <8 x double> %4546, <8 x double> poison, <8 x i32> zeroinitializer
  %4548 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4547, <8 x double> %4252, <8 x double> %4195)
  %4549 = load <8 x double>, ptr %4196, align 64, !tbaa !26
  %4550 = load <8 x double>, ptr %4198, align 64, !tbaa !26
  %4551 = load <8 x double>, ptr %4200, align 64, !tbaa !26
  %4552 = load <8 x double>, ptr %4202, align 64, !tbaa !26
  %4553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4548, <8 x double> %4552, <8 x double> %4551)
  %4554 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4548, <8 x double> %4553, <8 x double> %4550)
  %4555 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4548, <8 x double> %4554, <8 x double> %4549)
  %4556 = load ptr, ptr %4395, align 8, !tbaa !50
  %4557 = getelementptr inbounds nuw <8 x double>, ptr %4556, i64 %4544
  %4558 = load <8 x double>, ptr %4557, align 64, !tbaa !26
  %4559 = select <8 x i1> %4396, <8 x double> %4558, <8 x double> %4555
  store <8 x double> %4559, ptr %4557, align 64, !tbaa !26
  %4560 = load ptr, ptr %4397, align 64, !tbaa !60
  %4561 = getelementptr inbounds nuw <8 x double>, ptr %4560, i64 %4544
  %4562 = load <8 x double>, ptr %4561, align 64, !tbaa !26
  %4563 = select <8 x i1> %4396, <8 x double> %4562, <8 x double> %4555
  store <8 x double> %4563, ptr %4561, align 64, !tbaa !26
  %4564 = load ptr, ptr %4398, align 8, !tbaa !51
  %4565 = getelementptr inbounds nuw <8 x double>, ptr %4564, i64 %4544
  %4566 = load <8 x double>, ptr %4565, align 64, !tbaa !26
  %4567 = select <8 x i1> %4396, <8 x double> %4566, <8 x double> %4181
  store <8 x double> %4567, ptr %4565, align 64, !tbaa !26
  %4568 = load ptr, ptr %4399, align 16, !tbaa !62
  %4569 = getelementptr inbounds nuw <8 x double>, ptr %4568, i64 %4544
  %4570 = load <8 x double>, ptr %4569, align 64, !tbaa !26
  %4571 = select <8 x i1> %4396, <8 x double> %4570, <8 x double> %4181
  store <8 x double> %4571, ptr %4569, align 64, !tbaa !26
  %4572 = add nuw nsw i64 %4544, 1
  %4573 = icmp eq i64 %4572, %4176
  br i1 %4573, label %4472, label %4543, !llvm.loop !132

4574:                                             ; preds = %4472, %4117
  %4575 = phi <8 x double> [ %4542, %4472 ], [ %4119, %4117 ]
  %4576 = add nuw nsw i64 %4118, 1
  %4577 = load i64, ptr %178, align 8, !tbaa !20
  %4578 = icmp slt i64 %4576, %4577
  br i1 %4578, label %4117, label %4579, !llvm.loop !133

4579:                                             ; preds = %4574
  %4580 = load <8 x double>, ptr %158, align 64, !tbaa !26
  br label %4581

4581:                                             ; preds = %4579, %4075
  %4582 = phi <8 x double> [ %4084, %4075 ], [ %4580, %4579 ]
  %4583 = phi <8 x double> [ %4107, %4075 ], [ %4575, %4579 ]
  %4584 = load <8 x double>, ptr %161, align 64, !tbaa !26
  %4585 = select <8 x i1> %3675, <8 x double> %4584, <8 x double> %4583
  store <8 x double> %4585, ptr %161, align 64, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %3615, ptr %13, align 64, !tbaa !26
  %4586 = load ptr, ptr %238, align 64, !tbaa !38
  %4587 = getelementptr inbounds nuw i8, ptr %4586, i64 64
  store <8 x double> %4582, ptr %4586, align 64, !tbaa !26
  %4588 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %4589 = getelementptr inbounds nuw i8, ptr %4586, i64 128
  store <8 x double> %4588, ptr %4587, align 64, !tbaa !26
  %4590 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4591 = getelementptr inbounds nuw i8, ptr %4586, i64 192
  store <8 x double> %4590, ptr %4589, align 64, !tbaa !26
  %4592 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %4593 = getelementptr inbounds nuw i8, ptr %4586, i64 256
  store <8 x double> %4592, ptr %4591, align 64, !tbaa !26
  %4594 = load i64, ptr %178, align 8, !tbaa !20
  %4595 = icmp sgt i64 %4594, 0
  br i1 %4595, label %4600, label %4596

4596:                                             ; preds = %4600, %4581
  %4597 = phi ptr [ %4593, %4581 ], [ %4606, %4600 ]
  %4598 = load i64, ptr %240, align 8, !tbaa !134
  %4599 = icmp eq i64 %4598, 0
  br i1 %4599, label %4735, label %4610

4600:                                             ; preds = %4581, %4600
  %4601 = phi ptr [ %4606, %4600 ], [ %4593, %4581 ]
  %4602 = phi i64 [ %4607, %4600 ], [ 0, %4581 ]
  %4603 = load ptr, ptr %151, align 8, !tbaa !28
  %4604 = getelementptr inbounds nuw %struct.Piece, ptr %4603, i64 %4602, i32 35
  %4605 = load <8 x double>, ptr %4604, align 64, !tbaa !26
  %4606 = getelementptr inbounds nuw i8, ptr %4601, i64 64
  store <8 x double> %4605, ptr %4601, align 64, !tbaa !26
  %4607 = add nuw nsw i64 %4602, 1
  %4608 = load i64, ptr %178, align 8, !tbaa !20
  %4609 = icmp slt i64 %4607, %4608
  br i1 %4609, label %4600, label %4596, !llvm.loop !135

4610:                                             ; preds = %4596
  %4611 = load <8 x double>, ptr %224, align 64, !tbaa !26
  %4612 = getelementptr inbounds nuw i8, ptr %4597, i64 64
  store <8 x double> %4611, ptr %4597, align 64, !tbaa !26
  %4613 = load <8 x double>, ptr %202, align 64, !tbaa !26
  %4614 = getelementptr inbounds nuw i8, ptr %4597, i64 128
  store <8 x double> %4613, ptr %4612, align 64, !tbaa !26
  %4615 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4616 = load <8 x double>, ptr %219, align 64, !tbaa !26
  %4617 = fsub <8 x double> %4615, %4616
  %4618 = fcmp ogt <8 x double> %4617, zeroinitializer
  %4619 = select <8 x i1> %4618, <8 x double> %4617, <8 x double> zeroinitializer
  store <8 x double> %4619, ptr %4614, align 64, !tbaa !26
  %4620 = load i64, ptr %178, align 8, !tbaa !20
  %4621 = icmp sgt i64 %4620, 0
  br i1 %4621, label %4622, label %4735

4622:                                             ; preds = %4610
  %4623 = getelementptr inbounds nuw i8, ptr %4597, i64 192
  br label %4624

4624:                                             ; preds = %4622, %4624
  %4625 = phi ptr [ %4731, %4624 ], [ %4623, %4622 ]
  %4626 = phi i64 [ %4732, %4624 ], [ 0, %4622 ]
  %4627 = load ptr, ptr %151, align 8, !tbaa !28
  %4628 = getelementptr inbounds nuw %struct.Piece, ptr %4627, i64 %4626
  %4629 = getelementptr inbounds nuw i8, ptr %4628, i64 7568
  %4630 = load ptr, ptr %4629, align 16, !tbaa !47
  %4631 = load i64, ptr %141, align 16, !tbaa !21
  %4632 = getelementptr <8 x double>, ptr %4630, i64 %4631
  %4633 = getelementptr i8, ptr %4632, i64 -64
  %4634 = load <8 x double>, ptr %4633, align 64, !tbaa !26
  %4635 = getelementptr inbounds nuw i8, ptr %4628, i64 6848
  %4636 = load <8 x double>, ptr %4635, align 64, !tbaa !26
  %4637 = getelementptr inbounds nuw i8, ptr %4628, i64 5568
  %4638 = load <8 x double>, ptr %4637, align 64, !tbaa !26
  %4639 = fsub <8 x double> %4638, %4634
  %4640 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4636, <8 x double> %4639, <8 x double> %4634)
  %4641 = getelementptr inbounds nuw i8, ptr %4625, i64 64
  store <8 x double> %4640, ptr %4625, align 64, !tbaa !26
  %4642 = getelementptr inbounds nuw i8, ptr %4628, i64 6400
  %4643 = load <8 x double>, ptr %4642, align 64, !tbaa !26
  %4644 = getelementptr inbounds nuw i8, ptr %4625, i64 128
  store <8 x double> %4643, ptr %4641, align 64, !tbaa !26
  %4645 = load <8 x double>, ptr %4628, align 64, !tbaa !26
  %4646 = getelementptr inbounds nuw i8, ptr %4628, i64 3712
  %4647 = load <8 x double>, ptr %4646, align 64, !tbaa !26
  %4648 = fsub <8 x double> %4645, %4647
  %4649 = getelementptr inbounds nuw i8, ptr %4625, i64 192
  store <8 x double> %4648, ptr %4644, align 64, !tbaa !26
  %4650 = getelementptr inbounds nuw i8, ptr %4628, i64 4032
  %4651 = load <8 x double>, ptr %4650, align 64, !tbaa !26
  %4652 = getelementptr inbounds nuw i8, ptr %4625, i64 256
  store <8 x double> %4651, ptr %4649, align 64, !tbaa !26
  %4653 = getelementptr inbounds nuw i8, ptr %4628, i64 3968
  %4654 = load <8 x double>, ptr %4653, align 64, !tbaa !26
  %4655 = getelementptr inbounds nuw i8, ptr %4625, i64 320
  store <8 x double> %4654, ptr %4652, align 64, !tbaa !26
  %4656 = getelementptr inbounds nuw i8, ptr %4628, i64 3840
  %4657 = load <8 x double>, ptr %4656, align 64, !tbaa !26
  %4658 = getelementptr inbounds nuw i8, ptr %4625, i64 384
  store <8 x double> %4657, ptr %4655, align 64, !tbaa !26
  %4659 = getelementptr inbounds nuw i8, ptr %4628, i64 4096
  %4660 = load <8 x double>, ptr %4659, align 64, !tbaa !26
  %4661 = getelementptr inbounds nuw i8, ptr %4625, i64 448
  store <8 x double> %4660, ptr %4658, align 64, !tbaa !26
  %4662 = getelementptr inbounds nuw i8, ptr %4628, i64 7688
  %4663 = load i64, ptr %142, align 8, !tbaa !22
  %4664 = sitofp i64 %4663 to double
  %4665 = tail call double @llvm.fmuladd.f64(double %4664, double 7.500000e-01, double -5.000000e-01)
  %4666 = fcmp ogt double %4665, 0.000000e+00
  %4667 = select i1 %4666, double %4665, double 0.000000e+00
  %4668 = fptosi double %4667 to i64
  %4669 = add nsw i64 %4663, -2
  %4670 = tail call i64 @llvm.smin.i64(i64 %4669, i64 %4668)
  %4671 = sitofp i64 %4670 to double
  %4672 = fsub double %4665, %4671
  %4673 = fsub double 1.000000e+00, %4672
  %4674 = insertelement <8 x double> poison, double %4673, i64 0
  %4675 = shufflevector <8 x double> %4674, <8 x double> poison, <8 x i32> zeroinitializer
  %4676 = load ptr, ptr %4662, align 8, !tbaa !51
  %4677 = getelementptr inbounds <8 x double>, ptr %4676, i64 %4670
  %4678 = load <8 x double>, ptr %4677, align 64, !tbaa !26
  %4679 = insertelement <8 x double> poison, double %4672, i64 0
  %4680 = shufflevector <8 x double> %4679, <8 x double> poison, <8 x i32> zeroinitializer
  %4681 = getelementptr i8, ptr %4677, i64 64
  %4682 = load <8 x double>, ptr %4681, align 64, !tbaa !26
  %4683 = fmul <8 x double> %4682, %4680
  %4684 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4675, <8 x double> %4678, <8 x double> %4683)
  store <8 x double> %4684, ptr %4661, align 64, !tbaa !26
  %4685 = load i64, ptr %142, align 8, !tbaa !22
  %4686 = sitofp i64 %4685 to double
  %4687 = tail call double @llvm.fmuladd.f64(double %4686, double 5.000000e-01, double -5.000000e-01)
  %4688 = fcmp ogt double %4687, 0.000000e+00
  %4689 = select i1 %4688, double %4687, double 0.000000e+00
  %4690 = fptosi double %4689 to i64
  %4691 = add nsw i64 %4685, -2
  %4692 = tail call i64 @llvm.smin.i64(i64 %4691, i64 %4690)
  %4693 = sitofp i64 %4692 to double
  %4694 = fsub double %4687, %4693
  %4695 = fsub double 1.000000e+00, %4694
  %4696 = insertelement <8 x double> poison, double %4695, i64 0
  %4697 = shufflevector <8 x double> %4696, <8 x double> poison, <8 x i32> zeroinitializer
  %4698 = load ptr, ptr %4662, align 8, !tbaa !51
  %4699 = getelementptr inbounds <8 x double>, ptr %4698, i64 %4692
  %4700 = load <8 x double>, ptr %4699, align 64, !tbaa !26
  %4701 = insertelement <8 x double> poison, double %4694, i64 0
  %4702 = shufflevector <8 x double> %4701, <8 x double> poison, <8 x i32> zeroinitializer
  %4703 = getelementptr i8, ptr %4699, i64 64
  %4704 = load <8 x double>, ptr %4703, align 64, !tbaa !26
  %4705 = fmul <8 x double> %4704, %4702
  %4706 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4697, <8 x double> %4700, <8 x double> %4705)
  %4707 = getelementptr inbounds nuw i8, ptr %4625, i64 512
  store <8 x double> %4706, ptr %4707, align 64, !tbaa !26
  %4708 = load i64, ptr %142, align 8, !tbaa !22
  %4709 = sitofp i64 %4708 to double
  %4710 = tail call double @llvm.fmuladd.f64(double %4709, double 2.500000e-01, double -5.000000e-01)
  %4711 = fcmp ogt double %4710, 0.000000e+00
  %4712 = select i1 %4711, double %4710, double 0.000000e+00
  %4713 = fptosi double %4712 to i64
  %4714 = add nsw i64 %4708, -2
  %4715 = tail call i64 @llvm.smin.i64(i64 %4714, i64 %4713)
  %4716 = sitofp i64 %4715 to double
  %4717 = fsub double %4710, %4716
  %4718 = fsub double 1.000000e+00, %4717
  %4719 = insertelement <8 x double> poison, double %4718, i64 0
  %4720 = shufflevector <8 x double> %4719, <8 x double> poison, <8 x i32> zeroinitializer
  %4721 = load ptr, ptr %4662, align 8, !tbaa !51
  %4722 = getelementptr inbounds <8 x double>, ptr %4721, i64 %4715
  %4723 = load <8 x double>, ptr %4722, align 64, !tbaa !26
  %4724 = insertelement <8 x double> poison, double %4717, i64 0
  %4725 = shufflevector <8 x double> %4724, <8 x double> poison, <8 x i32> zeroinitializer
  %4726 = getelementptr i8, ptr %4722, i64 64
  %4727 = load <8 x double>, ptr %4726, align 64, !tbaa !26
  %4728 = fmul <8 x double> %4727, %4725
  %4729 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4720, <8 x double> %4723, <8 x double> %4728)
  %4730 = getelementptr inbounds nuw i8, ptr %4625, i64 576
  store <8 x double> %4729, ptr %4730, align 64, !tbaa !26
  %4731 = getelementptr inbounds nuw i8, ptr %4625, i64 640
  %4732 = add nuw nsw i64 %4626, 1
  %4733 = load i64, ptr %178, align 8, !tbaa !20
  %4734 = icmp slt i64 %4732, %4733
  br i1 %4734, label %4624, label %4735, !llvm.loop !136

4735:                                             ; preds = %4624, %4610, %4596
  %4736 = getelementptr inbounds nuw i8, ptr %4597, i64 192
  br label %4737

4737:                                             ; preds = %4735, %4896
  %4738 = phi i64 [ 0, %4735 ], [ %4897, %4896 ]
  %4739 = getelementptr inbounds nuw i64, ptr %13, i64 %4738
  %4740 = load i64, ptr %4739, align 8, !tbaa !30
  %4741 = icmp eq i64 %4740, 0
  br i1 %4741, label %4896, label %4742

4742:                                             ; preds = %4737
  %4743 = getelementptr inbounds nuw [8 x i64], ptr %241, i64 0, i64 %4738
  %4744 = load i64, ptr %4743, align 8, !tbaa !30
  %4745 = load i64, ptr %242, align 8, !tbaa !137
  %4746 = icmp eq i64 %4744, %4745
  br i1 %4746, label %4750, label %4747

4747:                                             ; preds = %4742
  %4748 = getelementptr inbounds nuw [8 x ptr], ptr %246, i64 0, i64 %4738
  %4749 = load ptr, ptr %4748, align 8, !tbaa !138
  br label %4765

4750:                                             ; preds = %4742
  %4751 = getelementptr inbounds nuw [8 x i64], ptr %143, i64 0, i64 %4738
  %4752 = load i64, ptr %4751, align 8, !tbaa !30
  %4753 = load ptr, ptr %243, align 8, !tbaa !139
  %4754 = load i64, ptr %134, align 8, !tbaa !42
  %4755 = getelementptr inbounds i64, ptr %4753, i64 %4754
  store i64 %4752, ptr %4755, align 8, !tbaa !30
  %4756 = load ptr, ptr %244, align 8, !tbaa !140
  %4757 = load i64, ptr %134, align 8, !tbaa !42
  %4758 = add nsw i64 %4757, 1
  store i64 %4758, ptr %134, align 8, !tbaa !42
  %4759 = load i64, ptr %242, align 8, !tbaa !137
  %4760 = mul nsw i64 %4759, %4757
  %4761 = load i64, ptr %245, align 8, !tbaa !15
  %4762 = mul nsw i64 %4760, %4761
  %4763 = getelementptr inbounds double, ptr %4756, i64 %4762
  %4764 = getelementptr inbounds nuw [8 x ptr], ptr %246, i64 0, i64 %4738
  store ptr %4763, ptr %4764, align 8, !tbaa !138
  br label %4765

4765:                                             ; preds = %4747, %4750
  %4766 = phi i64 [ %4744, %4747 ], [ 0, %4750 ]
  %4767 = phi ptr [ %4749, %4747 ], [ %4763, %4750 ]
  %4768 = add nsw i64 %4766, 1
  store i64 %4768, ptr %4743, align 8, !tbaa !30
  %4769 = load i64, ptr %245, align 8, !tbaa !15
  %4770 = mul nsw i64 %4769, %4766
  %4771 = getelementptr inbounds double, ptr %4767, i64 %4770
  %4772 = load ptr, ptr %238, align 64, !tbaa !38
  %4773 = icmp ult ptr %4772, %4593
  br i1 %4773, label %4839, label %4774

4774:                                             ; preds = %4839, %4765
  %4775 = phi ptr [ %4771, %4765 ], [ %4844, %4839 ]
  %4776 = load i64, ptr %150, align 64, !tbaa !16
  %4777 = icmp sgt i64 %4776, 0
  br i1 %4777, label %4778, label %4826

4778:                                             ; preds = %4774
  %4779 = trunc nuw nsw i64 %4738 to i32
  %4780 = and i64 %4776, 3
  %4781 = icmp ult i64 %4776, 4
  br i1 %4781, label %4810, label %4782

4782:                                             ; preds = %4778
  %4783 = and i64 %4776, 9223372036854775804
  br label %4784

4784:                                             ; preds = %4784, %4782
  %4785 = phi i64 [ 0, %4782 ], [ %4807, %4784 ]
  %4786 = phi ptr [ %4775, %4782 ], [ %4804, %4784 ]
  %4787 = phi i64 [ 0, %4782 ], [ %4808, %4784 ]
  %4788 = getelementptr inbounds nuw <8 x double>, ptr %4593, i64 %4785
  %4789 = getelementptr i8, ptr %4786, i64 8
  %4790 = load <8 x double>, ptr %4788, align 64, !tbaa !26
  %4791 = extractelement <8 x double> %4790, i32 %4779
  store double %4791, ptr %4786, align 8, !tbaa !43
  %4792 = or disjoint i64 %4785, 1
  %4793 = getelementptr inbounds nuw <8 x double>, ptr %4593, i64 %4792
  %4794 = getelementptr i8, ptr %4786, i64 16
  %4795 = load <8 x double>, ptr %4793, align 64, !tbaa !26
  %4796 = extractelement <8 x double> %4795, i32 %4779
  store double %4796, ptr %4789, align 8, !tbaa !43
  %4797 = or disjoint i64 %4785, 2
  %4798 = getelementptr inbounds nuw <8 x double>, ptr %4593, i64 %4797
  %4799 = getelementptr i8, ptr %4786, i64 24
  %4800 = load <8 x double>, ptr %4798, align 64, !tbaa !26
  %4801 = extractelement <8 x double> %4800, i32 %4779
  store double %4801, ptr %4794, align 8, !tbaa !43
  %4802 = or disjoint i64 %4785, 3
  %4803 = getelementptr inbounds nuw <8 x double>, ptr %4593, i64 %4802
  %4804 = getelementptr i8, ptr %4786, i64 32
  %4805 = load <8 x double>, ptr %4803, align 64, !tbaa !26
  %4806 = extractelement <8 x double> %4805, i32 %4779
  store double %4806, ptr %4799, align 8, !tbaa !43
  %4807 = add nuw nsw i64 %4785, 4
  %4808 = add i64 %4787, 4
  %4809 = icmp eq i64 %4808, %4783
  br i1 %4809, label %4810, label %4784, !llvm.loop !141

4810:                                             ; preds = %4784, %4778
  %4811 = phi ptr [ poison, %4778 ], [ %4804, %4784 ]
  %4812 = phi i64 [ 0, %4778 ], [ %4807, %4784 ]
  %4813 = phi ptr [ %4775, %4778 ], [ %4804, %4784 ]
  %4814 = icmp eq i64 %4780, 0
  br i1 %4814, label %4826, label %4815

4815:                                             ; preds = %4810, %4815
  %4816 = phi i64 [ %4823, %4815 ], [ %4812, %4810 ]
  %4817 = phi ptr [ %4820, %4815 ], [ %4813, %4810 ]
  %4818 = phi i64 [ %4824, %4815 ], [ 0, %4810 ]
  %4819 = getelementptr inbounds nuw <8 x double>, ptr %4593, i64 %4816
  %4820 = getelementptr i8, ptr %4817, i64 8
  %4821 = load <8 x double>, ptr %4819, align 64, !tbaa !26
  %4822 = extractelement <8 x double> %4821, i32 %4779
  store double %4822, ptr %4817, align 8, !tbaa !43
  %4823 = add nuw nsw i64 %4816, 1
  %4824 = add i64 %4818, 1
  %4825 = icmp eq i64 %4824, %4780
  br i1 %4825, label %4826, label %4815, !llvm.loop !142

4826:                                             ; preds = %4810, %4815, %4774
  %4827 = phi ptr [ %4775, %4774 ], [ %4811, %4810 ], [ %4820, %4815 ]
  %4828 = load i64, ptr %240, align 8, !tbaa !134
  %4829 = icmp eq i64 %4828, 0
  br i1 %4829, label %4896, label %4830

4830:                                             ; preds = %4826
  %4831 = getelementptr inbounds nuw double, ptr %4597, i64 %4738
  %4832 = load double, ptr %4831, align 8, !tbaa !43
  %4833 = getelementptr inbounds nuw i8, ptr %4827, i64 8
  store double %4832, ptr %4827, align 8, !tbaa !43
  %4834 = getelementptr inbounds nuw i8, ptr %4831, i64 64
  %4835 = load double, ptr %4834, align 8, !tbaa !43
  %4836 = getelementptr inbounds nuw i8, ptr %4827, i64 16
  store double %4835, ptr %4833, align 8, !tbaa !43
  %4837 = getelementptr inbounds nuw i8, ptr %4831, i64 128
  %4838 = load double, ptr %4837, align 8, !tbaa !43
  store double %4838, ptr %4836, align 8, !tbaa !43
  br i1 %4777, label %4847, label %4896

4839:                                             ; preds = %4765, %4839
  %4840 = phi ptr [ %4845, %4839 ], [ %4772, %4765 ]
  %4841 = phi ptr [ %4844, %4839 ], [ %4771, %4765 ]
  %4842 = getelementptr inbounds nuw double, ptr %4840, i64 %4738
  %4843 = load double, ptr %4842, align 8, !tbaa !43
  %4844 = getelementptr inbounds nuw i8, ptr %4841, i64 8
  store double %4843, ptr %4841, align 8, !tbaa !43
  %4845 = getelementptr inbounds nuw i8, ptr %4840, i64 64
  %4846 = icmp ult ptr %4845, %4593
  br i1 %4846, label %4839, label %4774, !llvm.loop !144

4847:                                             ; preds = %4830
  %4848 = getelementptr inbounds nuw i8, ptr %4827, i64 24
  %4849 = trunc nuw nsw i64 %4738 to i32
  br label %4850

4850:                                             ; preds = %4847, %4850
  %4851 = phi i64 [ %4894, %4850 ], [ 0, %4847 ]
  %4852 = phi ptr [ %4893, %4850 ], [ %4848, %4847 ]
  %4853 = mul nuw nsw i64 %4851, 640
  %4854 = getelementptr inbounds nuw i8, ptr %4736, i64 %4853
  %4855 = load <8 x double>, ptr %4854, align 64, !tbaa !26
  %4856 = extractelement <8 x double> %4855, i32 %4849
  %4857 = getelementptr inbounds nuw i8, ptr %4852, i64 8
  store double %4856, ptr %4852, align 8, !tbaa !43
  %4858 = getelementptr inbounds nuw i8, ptr %4854, i64 64
  %4859 = load <8 x double>, ptr %4858, align 64, !tbaa !26
  %4860 = extractelement <8 x double> %4859, i32 %4849
  %4861 = getelementptr inbounds nuw i8, ptr %4852, i64 16
  store double %4860, ptr %4857, align 8, !tbaa !43
  %4862 = getelementptr inbounds nuw i8, ptr %4854, i64 128
  %4863 = load <8 x double>, ptr %4862, align 64, !tbaa !26
  %4864 = extractelement <8 x double> %4863, i32 %4849
  %4865 = getelementptr inbounds nuw i8, ptr %4852, i64 24
  store double %4864, ptr %4861, align 8, !tbaa !43
  %4866 = getelementptr inbounds nuw i8, ptr %4854, i64 192
  %4867 = load <8 x double>, ptr %4866, align 64, !tbaa !26
  %4868 = extractelement <8 x double> %4867, i32 %4849
  %4869 = getelementptr inbounds nuw i8, ptr %4852, i64 32
  store double %4868, ptr %4865, align 8, !tbaa !43
  %4870 = getelementptr inbounds nuw i8, ptr %4854, i64 256
  %4871 = load <8 x double>, ptr %4870, align 64, !tbaa !26
  %4872 = extractelement <8 x double> %4871, i32 %4849
  %4873 = getelementptr inbounds nuw i8, ptr %4852, i64 40
  store double %4872, ptr %4869, align 8, !tbaa !43
  %4874 = getelementptr inbounds nuw i8, ptr %4854, i64 320
  %4875 = load <8 x double>, ptr %4874, align 64, !tbaa !26
  %4876 = extractelement <8 x double> %4875, i32 %4849
  %4877 = getelementptr inbounds nuw i8, ptr %4852, i64 48
  store double %4876, ptr %4873, align 8, !tbaa !43
  %4878 = getelementptr inbounds nuw i8, ptr %4854, i64 384
  %4879 = load <8 x double>, ptr %4878, align 64, !tbaa !26
  %4880 = extractelement <8 x double> %4879, i32 %4849
  %4881 = getelementptr inbounds nuw i8, ptr %4852, i64 56
  store double %4880, ptr %4877, align 8, !tbaa !43
  %4882 = getelementptr inbounds nuw i8, ptr %4854, i64 448
  %4883 = load <8 x double>, ptr %4882, align 64, !tbaa !26
  %4884 = extractelement <8 x double> %4883, i32 %4849
  %4885 = getelementptr inbounds nuw i8, ptr %4852, i64 64
  store double %4884, ptr %4881, align 8, !tbaa !43
  %4886 = getelementptr inbounds nuw i8, ptr %4854, i64 512
  %4887 = load <8 x double>, ptr %4886, align 64, !tbaa !26
  %4888 = extractelement <8 x double> %4887, i32 %4849
  %4889 = getelementptr inbounds nuw i8, ptr %4852, i64 72
  store double %4888, ptr %4885, align 8, !tbaa !43
  %4890 = getelementptr inbounds nuw i8, ptr %4854, i64 576
  %4891 = load <8 x double>, ptr %4890, align 64, !tbaa !26
  %4892 = extractelement <8 x double> %4891, i32 %4849
  %4893 = getelementptr inbounds nuw i8, ptr %4852, i64 80
  store double %4892, ptr %4889, align 8, !tbaa !43
  %4894 = add nuw nsw i64 %4851, 1
  %4895 = icmp eq i64 %4894, %4776
  br i1 %4895, label %4896, label %4850, !llvm.loop !141

4896:                                             ; preds = %4850, %4830, %4826, %4737
  %4897 = add nuw nsw i64 %4738, 1
  %4898 = icmp eq i64 %4897, 8
  br i1 %4898, label %4899, label %4737, !llvm.loop !145

4899:                                             ; preds = %4896
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %4900 = load <8 x double>, ptr %158, align 64, !tbaa !26
  %4901 = load <8 x double>, ptr %179, align 64, !tbaa !26
  %4902 = fsub <8 x double> %4900, %4901
  %4903 = load <8 x double>, ptr %180, align 64, !tbaa !26
  %4904 = fadd <8 x double> %4903, splat (double -1.000000e-09)
  %4905 = fcmp oge <8 x double> %4902, %4904
  %4906 = select <8 x i1> %4905, <8 x i64> %3615, <8 x i64> zeroinitializer
  %4907 = load i64, ptr %178, align 8, !tbaa !20
  %4908 = icmp sgt i64 %4907, 0
  br i1 %4908, label %4909, label %4941

4909:                                             ; preds = %4899
  %4910 = load ptr, ptr %151, align 8, !tbaa !28
  %4911 = and i64 %4907, 1
  %4912 = icmp eq i64 %4907, 1
  br i1 %4912, label %4931, label %4913

4913:                                             ; preds = %4909
  %4914 = and i64 %4907, 9223372036854775806
  br label %4915

4915:                                             ; preds = %4915, %4913
  %4916 = phi i64 [ 0, %4913 ], [ %4928, %4915 ]
  %4917 = phi <8 x double> [ splat (double 1.000000e+09), %4913 ], [ %4927, %4915 ]
  %4918 = phi i64 [ 0, %4913 ], [ %4929, %4915 ]
  %4919 = getelementptr inbounds nuw %struct.Piece, ptr %4910, i64 %4916, i32 35
  %4920 = load <8 x double>, ptr %4919, align 64, !tbaa !26
  %4921 = fcmp olt <8 x double> %4917, %4920
  %4922 = select <8 x i1> %4921, <8 x double> %4917, <8 x double> %4920
  %4923 = or disjoint i64 %4916, 1
  %4924 = getelementptr inbounds nuw %struct.Piece, ptr %4910, i64 %4923, i32 35
  %4925 = load <8 x double>, ptr %4924, align 64, !tbaa !26
  %4926 = fcmp olt <8 x double> %4922, %4925
  %4927 = select <8 x i1> %4926, <8 x double> %4922, <8 x double> %4925
  %4928 = add nuw nsw i64 %4916, 2
  %4929 = add i64 %4918, 2
  %4930 = icmp eq i64 %4929, %4914
  br i1 %4930, label %4931, label %4915, !llvm.loop !119

4931:                                             ; preds = %4915, %4909
  %4932 = phi <8 x double> [ poison, %4909 ], [ %4927, %4915 ]
  %4933 = phi i64 [ 0, %4909 ], [ %4928, %4915 ]
  %4934 = phi <8 x double> [ splat (double 1.000000e+09), %4909 ], [ %4927, %4915 ]
  %4935 = icmp eq i64 %4911, 0
  br i1 %4935, label %4941, label %4936

4936:                                             ; preds = %4931
  %4937 = getelementptr inbounds nuw %struct.Piece, ptr %4910, i64 %4933, i32 35
  %4938 = load <8 x double>, ptr %4937, align 64, !tbaa !26
  %4939 = fcmp olt <8 x double> %4934, %4938
  %4940 = select <8 x i1> %4939, <8 x double> %4934, <8 x double> %4938
  br label %4941

4941:                                             ; preds = %4936, %4931, %4899
  %4942 = phi <8 x double> [ splat (double 1.000000e+09), %4899 ], [ %4932, %4931 ], [ %4940, %4936 ]
  %4943 = load <8 x double>, ptr %234, align 64, !tbaa !26
  %4944 = select <8 x i1> %3675, <8 x double> %4943, <8 x double> %4942
  store <8 x double> %4944, ptr %234, align 64, !tbaa !26
  %4945 = load <8 x double>, ptr %235, align 64, !tbaa !26
  %4946 = fcmp une <8 x double> %4945, zeroinitializer
  %4947 = load <8 x double>, ptr %209, align 64, !tbaa !26
  %4948 = load <8 x double>, ptr %200, align 64, !tbaa !26
  %4949 = fsub <8 x double> %4947, %4948
  %4950 = fcmp une <8 x double> %4945, splat (double 1.000000e+00)
  %4951 = load <8 x double>, ptr %166, align 64, !tbaa !26
  %4952 = load <8 x double>, ptr %236, align 64, !tbaa !26
  %4953 = fsub <8 x double> %4951, %4952
  %4954 = select <8 x i1> %4950, <8 x double> splat (double -1.000000e+00), <8 x double> %4953
  %4955 = fcmp une <8 x double> %4945, splat (double 2.000000e+00)
  %4956 = fsub <8 x double> %4944, %4952
  %4957 = select <8 x i1> %4955, <8 x double> %4954, <8 x double> %4956
  %4958 = fcmp une <8 x double> %4945, splat (double 3.000000e+00)
  %4959 = fsub <8 x double> %4949, %4952
  %4960 = select <8 x i1> %4958, <8 x double> %4957, <8 x double> %4959
  %4961 = fcmp une <8 x double> %4945, splat (double 4.000000e+00)
  %4962 = fsub <8 x double> %4952, %4949
  %4963 = select <8 x i1> %4961, <8 x double> %4960, <8 x double> %4962
  %4964 = fcmp oge <8 x double> %4963, splat (double 0xBEB0C6F7A0B5ED8D)
  %4965 = select <8 x i1> %4964, <8 x i1> %4946, <8 x i1> zeroinitializer
  %4966 = select <8 x i1> %4965, <8 x i64> %3615, <8 x i64> zeroinitializer
  %4967 = xor <8 x i64> %4966, splat (i64 -1)
  %4968 = and <8 x i64> %4906, %4967
  %4969 = load <8 x double>, ptr %148, align 64, !tbaa !26
  %4970 = icmp ne <8 x i64> %4968, zeroinitializer
  %4971 = select <8 x i1> %4946, <8 x i1> %4970, <8 x i1> zeroinitializer
  %4972 = select <8 x i1> %4971, <8 x double> splat (double 2.000000e+00), <8 x double> %4969
  store <8 x double> %4972, ptr %148, align 64, !tbaa !26
  %4973 = or <8 x i64> %4966, %4906
  %4974 = load <8 x double>, ptr %239, align 64, !tbaa !26
  %4975 = fadd <8 x double> %4974, splat (double 1.000000e+00)
  %4976 = icmp eq <8 x i64> %4973, zeroinitializer
  %4977 = select <8 x i1> %4976, <8 x double> %4974, <8 x double> %4975
  store <8 x double> %4977, ptr %239, align 64, !tbaa !26
  %4978 = xor <8 x i64> %4973, %3615
  %4979 = load <8 x double>, ptr %176, align 64, !tbaa !26
  %4980 = fcmp oeq <8 x double> %4979, zeroinitializer
  %4981 = load <8 x double>, ptr %177, align 64, !tbaa !26
  %4982 = fcmp oeq <8 x double> %4981, zeroinitializer
  %4983 = select <8 x i1> %4982, <8 x i1> %4980, <8 x i1> zeroinitializer
  %4984 = select <8 x i1> %4983, <8 x i64> %4978, <8 x i64> zeroinitializer
  %4985 = load <8 x double>, ptr %163, align 64, !tbaa !26
  %4986 = fmul <8 x double> %4985, splat (double 5.000000e-01)
  %4987 = load <8 x double>, ptr %164, align 64, !tbaa !26
  %4988 = fadd <8 x double> %4987, %4986
  %4989 = fadd <8 x double> %4988, splat (double -4.000000e-03)
  %4990 = fcmp ult <8 x double> %4951, %4989
  %4991 = fsub <8 x double> %4987, %4986
  %4992 = fadd <8 x double> %4991, splat (double 4.000000e-03)
  %4993 = fcmp ole <8 x double> %4951, %4992
  %4994 = load <8 x i64>, ptr %165, align 64, !tbaa !26
  %4995 = select <8 x i1> %4993, <8 x i64> splat (i64 -1), <8 x i64> %4994
  %4996 = select <8 x i1> %4990, <8 x i64> %4995, <8 x i64> zeroinitializer
  %4997 = xor <8 x i64> %4996, %4994
  %4998 = and <8 x i64> %4997, %4984
  %4999 = and <8 x i64> %4996, %4984
  %5000 = xor <8 x i64> %4984, splat (i64 -1)
  %5001 = and <8 x i64> %4994, %5000
  %5002 = or <8 x i64> %4999, %5001
  store <8 x i64> %5002, ptr %165, align 64, !tbaa !26
  %5003 = load <8 x i64>, ptr %175, align 64, !tbaa !26
  %5004 = or <8 x i64> %4998, %5003
  store <8 x i64> %5004, ptr %175, align 64, !tbaa !26
  %5005 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4973)
  %5006 = icmp eq i64 %5005, 0
  br i1 %5006, label %5041, label %5007

5007:                                             ; preds = %4941
  %5008 = extractelement <8 x i64> %4973, i64 0
  %5009 = icmp eq i64 %5008, 0
  br i1 %5009, label %5011, label %5010

5010:                                             ; preds = %5007
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %5011

5011:                                             ; preds = %5010, %5007
  %5012 = extractelement <8 x i64> %4973, i64 1
  %5013 = icmp eq i64 %5012, 0
  br i1 %5013, label %5015, label %5014

5014:                                             ; preds = %5011
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %5015

5015:                                             ; preds = %5014, %5011
  %5016 = extractelement <8 x i64> %4973, i64 2
  %5017 = icmp eq i64 %5016, 0
  br i1 %5017, label %5019, label %5018

5018:                                             ; preds = %5015
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %5019

5019:                                             ; preds = %5018, %5015
  %5020 = extractelement <8 x i64> %4973, i64 3
  %5021 = icmp eq i64 %5020, 0
  br i1 %5021, label %5023, label %5022

5022:                                             ; preds = %5019
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %5023

5023:                                             ; preds = %5022, %5019
  %5024 = extractelement <8 x i64> %4973, i64 4
  %5025 = icmp eq i64 %5024, 0
  br i1 %5025, label %5027, label %5026

5026:                                             ; preds = %5023
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %5027

5027:                                             ; preds = %5026, %5023
  %5028 = extractelement <8 x i64> %4973, i64 5
  %5029 = icmp eq i64 %5028, 0
  br i1 %5029, label %5031, label %5030

5030:                                             ; preds = %5027
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %5031

5031:                                             ; preds = %5030, %5027
  %5032 = extractelement <8 x i64> %4973, i64 6
  %5033 = icmp eq i64 %5032, 0
  br i1 %5033, label %5035, label %5034

5034:                                             ; preds = %5031
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %5035

5035:                                             ; preds = %5034, %5031
  %5036 = extractelement <8 x i64> %4973, i64 7
  %5037 = icmp eq i64 %5036, 0
  br i1 %5037, label %5039, label %5038

5038:                                             ; preds = %5035
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(6160) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %5039

5039:                                             ; preds = %5038, %5035
  %5040 = load <8 x double>, ptr %148, align 64, !tbaa !26
  br label %5041

5041:                                             ; preds = %5039, %4941
  %5042 = phi <8 x double> [ %5040, %5039 ], [ %4972, %4941 ]
  %5043 = load <8 x double>, ptr %145, align 64, !tbaa !26
  %5044 = load <8 x double>, ptr %247, align 64, !tbaa !26
  %5045 = fadd <8 x double> %5044, splat (double -1.000000e+00)
  %5046 = fcmp oge <8 x double> %5043, %5045
  %5047 = select <8 x i1> %5046, <8 x i64> %3615, <8 x i64> zeroinitializer
  %5048 = icmp eq <8 x i64> %5047, zeroinitializer
  %5049 = select <8 x i1> %5048, <8 x double> %5042, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %5049, ptr %148, align 64, !tbaa !26
  %5050 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %5047)
  %5051 = icmp eq i64 %5050, 0
  br i1 %5051, label %549, label %5052

5052:                                             ; preds = %5041
  %5053 = extractelement <8 x i64> %5047, i64 0
  %5054 = icmp eq i64 %5053, 0
  br i1 %5054, label %5056, label %5055

5055:                                             ; preds = %5052
  store double 1.000000e+00, ptr %140, align 8, !tbaa !43
  br label %5056

5056:                                             ; preds = %5055, %5052
  %5057 = extractelement <8 x i64> %5047, i64 1
  %5058 = icmp eq i64 %5057, 0
  br i1 %5058, label %5060, label %5059

5059:                                             ; preds = %5056
  store double 1.000000e+00, ptr %277, align 8, !tbaa !43
  br label %5060

5060:                                             ; preds = %5059, %5056
  %5061 = extractelement <8 x i64> %5047, i64 2
  %5062 = icmp eq i64 %5061, 0
  br i1 %5062, label %5064, label %5063

5063:                                             ; preds = %5060
  store double 1.000000e+00, ptr %278, align 8, !tbaa !43
  br label %5064

5064:                                             ; preds = %5063, %5060
  %5065 = extractelement <8 x i64> %5047, i64 3
  %5066 = icmp eq i64 %5065, 0
  br i1 %5066, label %5068, label %5067

5067:                                             ; preds = %5064
  store double 1.000000e+00, ptr %279, align 8, !tbaa !43
  br label %5068

5068:                                             ; preds = %5067, %5064
  %5069 = extractelement <8 x i64> %5047, i64 4
  %5070 = icmp eq i64 %5069, 0
  br i1 %5070, label %5072, label %5071

5071:                                             ; preds = %5068
  store double 1.000000e+00, ptr %280, align 8, !tbaa !43
  br label %5072

5072:                                             ; preds = %5071, %5068
  %5073 = extractelement <8 x i64> %5047, i64 5
  %5074 = icmp eq i64 %5073, 0
  br i1 %5074, label %5076, label %5075

5075:                                             ; preds = %5072
  store double 1.000000e+00, ptr %281, align 8, !tbaa !43
  br label %5076

5076:                                             ; preds = %5075, %5072
  %5077 = extractelement <8 x i64> %5047, i64 6
  %5078 = icmp eq i64 %5077, 0
  br i1 %5078, label %5080, label %5079

5079:                                             ; preds = %5076
  store double 1.000000e+00, ptr %282, align 8, !tbaa !43
  br label %5080

5080:                                             ; preds = %5079, %5076
  %5081 = extractelement <8 x i64> %5047, i64 7
  %5082 = icmp eq i64 %5081, 0
  br i1 %5082, label %549, label %5083

5083:                                             ; preds = %5080
  store double 1.000000e+00, ptr %283, align 8, !tbaa !43
  br label %549

5084:                                             ; preds = %549, %554, %131
  %5085 = phi i64 [ 0, %131 ], [ 1, %554 ], [ 0, %549 ]
  ret i64 %5085
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
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !137
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
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
  br label %160

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
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %136 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %137 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !43
  %138 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !43
  %139 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !43
  %140 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !43
  %141 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !43
  %142 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !43
  %143 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !43
  %144 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !43
  %145 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !43
  %146 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %146, align 8, !tbaa !43
  %147 = getelementptr inbounds double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %147, align 8, !tbaa !43
  %148 = getelementptr inbounds double, ptr %135, i64 %6
  store double 0.000000e+00, ptr %148, align 8, !tbaa !43
  %149 = getelementptr inbounds double, ptr %136, i64 %6
  store double 0.000000e+00, ptr %149, align 8, !tbaa !43
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

160:                                              ; preds = %30, %539
  %161 = phi i64 [ 0, %30 ], [ %540, %539 ]
  %162 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %161
  %163 = load i64, ptr %33, align 16, !tbaa !21
  %164 = load i64, ptr %34, align 8, !tbaa !22
  %165 = load i64, ptr %35, align 64, !tbaa !16
  %166 = mul nsw i64 %165, %3
  %167 = add nsw i64 %166, %161
  %168 = getelementptr inbounds nuw i8, ptr %162, i64 7552
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
  %186 = getelementptr inbounds nuw i8, ptr %162, i64 7648
  %187 = load ptr, ptr %186, align 32, !tbaa !72
  %188 = getelementptr double, ptr %187, i64 %6
  %189 = getelementptr double, ptr %183, i64 %163
  %190 = getelementptr inbounds nuw i8, ptr %162, i64 7656
  %191 = load ptr, ptr %190, align 8, !tbaa !49
  %192 = getelementptr double, ptr %191, i64 %6
  %193 = shl i64 %163, 4
  %194 = getelementptr i8, ptr %183, i64 %193
  %195 = getelementptr inbounds nuw i8, ptr %162, i64 7664
  %196 = load ptr, ptr %195, align 16, !tbaa !121
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
  %205 = load double, ptr %204, align 8, !tbaa !43
  %206 = getelementptr <8 x double>, ptr %172, i64 %203
  store double %205, ptr %206, align 8, !tbaa !43
  %207 = or disjoint i64 %203, 1
  %208 = getelementptr double, ptr %171, i64 %207
  %209 = load double, ptr %208, align 8, !tbaa !43
  %210 = getelementptr <8 x double>, ptr %172, i64 %207
  store double %209, ptr %210, align 8, !tbaa !43
  %211 = add nuw nsw i64 %203, 2
  %212 = icmp eq i64 %211, 46
  br i1 %212, label %173, label %202, !llvm.loop !152

213:                                              ; preds = %241, %185
  %214 = phi i64 [ 0, %185 ], [ %263, %241 ]
  %215 = icmp eq i64 %198, 0
  br i1 %215, label %226, label %216

216:                                              ; preds = %213
  %217 = getelementptr inbounds nuw double, ptr %183, i64 %214
  %218 = load double, ptr %217, align 8, !tbaa !43
  %219 = getelementptr <8 x double>, ptr %188, i64 %214
  store double %218, ptr %219, align 8, !tbaa !43
  %220 = getelementptr double, ptr %189, i64 %214
  %221 = load double, ptr %220, align 8, !tbaa !43
  %222 = getelementptr <8 x double>, ptr %192, i64 %214
  store double %221, ptr %222, align 8, !tbaa !43
  %223 = getelementptr double, ptr %194, i64 %214
  %224 = load double, ptr %223, align 8, !tbaa !43
  %225 = getelementptr <8 x double>, ptr %197, i64 %214
  store double %224, ptr %225, align 8, !tbaa !43
  br label %226

226:                                              ; preds = %216, %213, %173
  %227 = getelementptr inbounds nuw i8, ptr %162, i64 960
  %228 = getelementptr inbounds double, ptr %227, i64 %6
  %229 = load double, ptr %228, align 8, !tbaa !43
  %230 = load double, ptr %172, align 8, !tbaa !43
  %231 = icmp sgt i64 %180, 0
  br i1 %231, label %232, label %278

232:                                              ; preds = %226
  %233 = getelementptr double, ptr %183, i64 %177
  %234 = getelementptr inbounds nuw i8, ptr %162, i64 7672
  %235 = load ptr, ptr %234, align 8, !tbaa !35
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
  %245 = load double, ptr %244, align 8, !tbaa !43
  %246 = getelementptr <8 x double>, ptr %188, i64 %242
  store double %245, ptr %246, align 8, !tbaa !43
  %247 = getelementptr double, ptr %189, i64 %242
  %248 = load double, ptr %247, align 8, !tbaa !43
  %249 = getelementptr <8 x double>, ptr %192, i64 %242
  store double %248, ptr %249, align 8, !tbaa !43
  %250 = getelementptr double, ptr %194, i64 %242
  %251 = load double, ptr %250, align 8, !tbaa !43
  %252 = getelementptr <8 x double>, ptr %197, i64 %242
  store double %251, ptr %252, align 8, !tbaa !43
  %253 = or disjoint i64 %242, 1
  %254 = getelementptr inbounds nuw double, ptr %183, i64 %253
  %255 = load double, ptr %254, align 8, !tbaa !43
  %256 = getelementptr <8 x double>, ptr %188, i64 %253
  store double %255, ptr %256, align 8, !tbaa !43
  %257 = getelementptr double, ptr %189, i64 %253
  %258 = load double, ptr %257, align 8, !tbaa !43
  %259 = getelementptr <8 x double>, ptr %192, i64 %253
  store double %258, ptr %259, align 8, !tbaa !43
  %260 = getelementptr double, ptr %194, i64 %253
  %261 = load double, ptr %260, align 8, !tbaa !43
  %262 = getelementptr <8 x double>, ptr %197, i64 %253
  store double %261, ptr %262, align 8, !tbaa !43
  %263 = add nuw nsw i64 %242, 2
  %264 = add i64 %243, 2
  %265 = icmp eq i64 %264, %201
  br i1 %265, label %213, label %241, !llvm.loop !153

266:                                              ; preds = %287, %232
  %267 = phi i64 [ 0, %232 ], [ %305, %287 ]
  %268 = icmp eq i64 %237, 0
  br i1 %268, label %278, label %269

269:                                              ; preds = %266, %269
  %270 = phi i64 [ %275, %269 ], [ %267, %266 ]
  %271 = phi i64 [ %276, %269 ], [ 0, %266 ]
  %272 = getelementptr double, ptr %233, i64 %270
  %273 = load double, ptr %272, align 8, !tbaa !43
  %274 = getelementptr <8 x double>, ptr %236, i64 %270
  store double %273, ptr %274, align 8, !tbaa !43
  %275 = add nuw nsw i64 %270, 1
  %276 = add i64 %271, 1
  %277 = icmp eq i64 %276, %237
  br i1 %277, label %278, label %269, !llvm.loop !154

278:                                              ; preds = %266, %269, %226
  %279 = icmp ne i64 %169, 0
  %280 = icmp sgt i64 %163, -1
  %281 = select i1 %279, i1 %280, i1 false
  br i1 %281, label %282, label %308

282:                                              ; preds = %278
  %283 = fdiv double 1.000000e+00, %230
  %284 = getelementptr inbounds nuw i8, ptr %162, i64 7672
  %285 = load ptr, ptr %284, align 8, !tbaa !35
  %286 = getelementptr double, ptr %285, i64 %6
  br label %427

287:                                              ; preds = %287, %239
  %288 = phi i64 [ 0, %239 ], [ %305, %287 ]
  %289 = phi i64 [ 0, %239 ], [ %306, %287 ]
  %290 = getelementptr double, ptr %233, i64 %288
  %291 = load double, ptr %290, align 8, !tbaa !43
  %292 = getelementptr <8 x double>, ptr %236, i64 %288
  store double %291, ptr %292, align 8, !tbaa !43
  %293 = or disjoint i64 %288, 1
  %294 = getelementptr double, ptr %233, i64 %293
  %295 = load double, ptr %294, align 8, !tbaa !43
  %296 = getelementptr <8 x double>, ptr %236, i64 %293
  store double %295, ptr %296, align 8, !tbaa !43
  %297 = or disjoint i64 %288, 2
  %298 = getelementptr double, ptr %233, i64 %297
  %299 = load double, ptr %298, align 8, !tbaa !43
  %300 = getelementptr <8 x double>, ptr %236, i64 %297
  store double %299, ptr %300, align 8, !tbaa !43
  %301 = or disjoint i64 %288, 3
  %302 = getelementptr double, ptr %233, i64 %301
  %303 = load double, ptr %302, align 8, !tbaa !43
  %304 = getelementptr <8 x double>, ptr %236, i64 %301
  store double %303, ptr %304, align 8, !tbaa !43
  %305 = add nuw nsw i64 %288, 4
  %306 = add i64 %289, 4
  %307 = icmp eq i64 %306, %240
  br i1 %307, label %266, label %287, !llvm.loop !155

308:                                              ; preds = %427, %278
  %309 = getelementptr inbounds nuw i8, ptr %162, i64 2560
  %310 = getelementptr inbounds double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !43
  %312 = getelementptr inbounds nuw i8, ptr %162, i64 2624
  %313 = getelementptr inbounds double, ptr %312, i64 %6
  %314 = load double, ptr %313, align 8, !tbaa !43
  %315 = getelementptr inbounds nuw i8, ptr %162, i64 2688
  %316 = getelementptr inbounds double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !43
  %318 = getelementptr inbounds nuw i8, ptr %162, i64 2752
  %319 = getelementptr inbounds double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !43
  %321 = tail call double @llvm.fmuladd.f64(double %230, double %320, double %317)
  %322 = tail call double @llvm.fmuladd.f64(double %230, double %321, double %314)
  %323 = tail call double @llvm.fmuladd.f64(double %230, double %322, double %311)
  %324 = getelementptr inbounds nuw i8, ptr %162, i64 832
  %325 = getelementptr inbounds double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !43
  %327 = getelementptr inbounds nuw i8, ptr %162, i64 1408
  %328 = getelementptr inbounds double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !43
  %330 = getelementptr inbounds nuw i8, ptr %162, i64 1536
  %331 = getelementptr inbounds double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !43
  %333 = fsub double %329, %332
  %334 = fmul double %326, %333
  %335 = getelementptr inbounds nuw i8, ptr %162, i64 2944
  %336 = getelementptr inbounds nuw i8, ptr %162, i64 3712
  %337 = getelementptr inbounds nuw i8, ptr %162, i64 4480
  %338 = getelementptr inbounds nuw i8, ptr %162, i64 896
  %339 = getelementptr inbounds double, ptr %338, i64 %6
  %340 = getelementptr inbounds nuw i8, ptr %162, i64 1024
  %341 = getelementptr inbounds double, ptr %340, i64 %6
  %342 = getelementptr double, ptr %335, i64 %6
  %343 = getelementptr i8, ptr %342, i64 320
  store double 0.000000e+00, ptr %343, align 8, !tbaa !43
  %344 = getelementptr i8, ptr %342, i64 384
  store double 0.000000e+00, ptr %344, align 8, !tbaa !43
  %345 = getelementptr i8, ptr %342, i64 448
  store double 0.000000e+00, ptr %345, align 8, !tbaa !43
  %346 = getelementptr i8, ptr %342, i64 512
  store double 0.000000e+00, ptr %346, align 8, !tbaa !43
  %347 = getelementptr i8, ptr %342, i64 640
  store double 0.000000e+00, ptr %347, align 8, !tbaa !43
  store double %230, ptr %342, align 8, !tbaa !43
  %348 = getelementptr inbounds nuw i8, ptr %162, i64 3008
  %349 = getelementptr inbounds double, ptr %348, i64 %6
  store double %329, ptr %349, align 8, !tbaa !43
  %350 = load double, ptr %339, align 8, !tbaa !43
  %351 = getelementptr inbounds nuw i8, ptr %162, i64 3072
  %352 = getelementptr inbounds double, ptr %351, i64 %6
  store double %350, ptr %352, align 8, !tbaa !43
  %353 = getelementptr inbounds nuw i8, ptr %162, i64 3136
  %354 = getelementptr inbounds double, ptr %353, i64 %6
  store double %334, ptr %354, align 8, !tbaa !43
  %355 = getelementptr inbounds nuw i8, ptr %162, i64 3520
  %356 = getelementptr inbounds double, ptr %355, i64 %6
  store double %229, ptr %356, align 8, !tbaa !43
  %357 = load double, ptr %341, align 8, !tbaa !43
  %358 = getelementptr inbounds nuw i8, ptr %162, i64 3200
  %359 = getelementptr inbounds double, ptr %358, i64 %6
  store double %357, ptr %359, align 8, !tbaa !43
  %360 = getelementptr inbounds nuw i8, ptr %162, i64 3648
  %361 = getelementptr inbounds double, ptr %360, i64 %6
  store double %323, ptr %361, align 8, !tbaa !43
  %362 = getelementptr double, ptr %336, i64 %6
  %363 = getelementptr i8, ptr %362, i64 320
  store double 0.000000e+00, ptr %363, align 8, !tbaa !43
  %364 = getelementptr i8, ptr %362, i64 384
  store double 0.000000e+00, ptr %364, align 8, !tbaa !43
  %365 = getelementptr i8, ptr %362, i64 448
  store double 0.000000e+00, ptr %365, align 8, !tbaa !43
  %366 = getelementptr i8, ptr %362, i64 512
  store double 0.000000e+00, ptr %366, align 8, !tbaa !43
  %367 = getelementptr i8, ptr %362, i64 640
  store double 0.000000e+00, ptr %367, align 8, !tbaa !43
  store double %230, ptr %362, align 8, !tbaa !43
  %368 = getelementptr inbounds nuw i8, ptr %162, i64 3776
  %369 = getelementptr inbounds double, ptr %368, i64 %6
  store double %329, ptr %369, align 8, !tbaa !43
  %370 = getelementptr inbounds nuw i8, ptr %162, i64 3840
  %371 = getelementptr inbounds double, ptr %370, i64 %6
  store double %350, ptr %371, align 8, !tbaa !43
  %372 = getelementptr inbounds nuw i8, ptr %162, i64 3904
  %373 = getelementptr inbounds double, ptr %372, i64 %6
  store double %334, ptr %373, align 8, !tbaa !43
  %374 = getelementptr inbounds nuw i8, ptr %162, i64 4288
  %375 = getelementptr inbounds double, ptr %374, i64 %6
  store double %229, ptr %375, align 8, !tbaa !43
  %376 = getelementptr inbounds nuw i8, ptr %162, i64 3968
  %377 = getelementptr inbounds double, ptr %376, i64 %6
  store double %357, ptr %377, align 8, !tbaa !43
  %378 = getelementptr inbounds nuw i8, ptr %162, i64 4416
  %379 = getelementptr inbounds double, ptr %378, i64 %6
  store double %323, ptr %379, align 8, !tbaa !43
  %380 = getelementptr double, ptr %337, i64 %6
  %381 = getelementptr i8, ptr %380, i64 320
  store double 0.000000e+00, ptr %381, align 8, !tbaa !43
  %382 = getelementptr i8, ptr %380, i64 384
  store double 0.000000e+00, ptr %382, align 8, !tbaa !43
  %383 = getelementptr i8, ptr %380, i64 448
  store double 0.000000e+00, ptr %383, align 8, !tbaa !43
  %384 = getelementptr i8, ptr %380, i64 512
  store double 0.000000e+00, ptr %384, align 8, !tbaa !43
  %385 = getelementptr i8, ptr %380, i64 640
  store double 0.000000e+00, ptr %385, align 8, !tbaa !43
  store double %230, ptr %380, align 8, !tbaa !43
  %386 = load double, ptr %328, align 8, !tbaa !43
  %387 = getelementptr inbounds nuw i8, ptr %162, i64 4544
  %388 = getelementptr inbounds double, ptr %387, i64 %6
  store double %386, ptr %388, align 8, !tbaa !43
  %389 = getelementptr inbounds nuw i8, ptr %162, i64 4608
  %390 = getelementptr inbounds double, ptr %389, i64 %6
  store double %350, ptr %390, align 8, !tbaa !43
  %391 = getelementptr inbounds nuw i8, ptr %162, i64 4672
  %392 = getelementptr inbounds double, ptr %391, i64 %6
  store double %334, ptr %392, align 8, !tbaa !43
  %393 = getelementptr inbounds nuw i8, ptr %162, i64 5056
  %394 = getelementptr inbounds double, ptr %393, i64 %6
  store double %229, ptr %394, align 8, !tbaa !43
  %395 = getelementptr inbounds nuw i8, ptr %162, i64 4736
  %396 = getelementptr inbounds double, ptr %395, i64 %6
  store double %357, ptr %396, align 8, !tbaa !43
  %397 = getelementptr inbounds nuw i8, ptr %162, i64 5184
  %398 = getelementptr inbounds double, ptr %397, i64 %6
  store double %323, ptr %398, align 8, !tbaa !43
  %399 = load double, ptr %339, align 8, !tbaa !43
  %400 = fadd double %334, %399
  %401 = getelementptr inbounds nuw i8, ptr %162, i64 1600
  %402 = getelementptr inbounds double, ptr %401, i64 %6
  store double %400, ptr %402, align 8, !tbaa !43
  %403 = getelementptr inbounds nuw i8, ptr %162, i64 5568
  %404 = getelementptr inbounds nuw i8, ptr %162, i64 6400
  %405 = getelementptr inbounds nuw i8, ptr %162, i64 6464
  %406 = getelementptr inbounds nuw i8, ptr %162, i64 7232
  %407 = getelementptr inbounds double, ptr %403, i64 %6
  store double %229, ptr %407, align 8, !tbaa !43
  %408 = getelementptr inbounds double, ptr %404, i64 %6
  store double %229, ptr %408, align 8, !tbaa !43
  %409 = getelementptr inbounds double, ptr %405, i64 %6
  store double %229, ptr %409, align 8, !tbaa !43
  %410 = getelementptr inbounds double, ptr %406, i64 %6
  store double %229, ptr %410, align 8, !tbaa !43
  %411 = getelementptr inbounds nuw i8, ptr %162, i64 5632
  %412 = getelementptr inbounds nuw i8, ptr %162, i64 5696
  %413 = getelementptr inbounds nuw i8, ptr %162, i64 7296
  %414 = getelementptr inbounds nuw i8, ptr %162, i64 7168
  %415 = getelementptr inbounds nuw i8, ptr %162, i64 6848
  %416 = getelementptr inbounds double, ptr %411, i64 %6
  store double 0.000000e+00, ptr %416, align 8, !tbaa !43
  %417 = getelementptr inbounds double, ptr %412, i64 %6
  store double 0.000000e+00, ptr %417, align 8, !tbaa !43
  %418 = getelementptr inbounds double, ptr %413, i64 %6
  store double 0.000000e+00, ptr %418, align 8, !tbaa !43
  %419 = getelementptr inbounds double, ptr %414, i64 %6
  store double 0.000000e+00, ptr %419, align 8, !tbaa !43
  %420 = getelementptr inbounds double, ptr %415, i64 %6
  store double 0.000000e+00, ptr %420, align 8, !tbaa !43
  %421 = getelementptr inbounds nuw i8, ptr %162, i64 7360
  %422 = getelementptr inbounds i64, ptr %421, i64 %6
  store i64 0, ptr %422, align 8, !tbaa !30
  %423 = getelementptr inbounds nuw i8, ptr %162, i64 7424
  %424 = getelementptr inbounds i64, ptr %423, i64 %6
  store i64 -1, ptr %424, align 8, !tbaa !30
  %425 = getelementptr inbounds nuw i8, ptr %162, i64 7488
  %426 = getelementptr inbounds i64, ptr %425, i64 %6
  store i64 0, ptr %426, align 8, !tbaa !30
  br i1 %184, label %449, label %465

427:                                              ; preds = %282, %427
  %428 = phi i64 [ 0, %282 ], [ %447, %427 ]
  %429 = icmp slt i64 %428, %169
  %430 = select i1 %429, double %283, double 1.000000e+00
  %431 = shl i64 %428, 8
  %432 = getelementptr i8, ptr %286, i64 %431
  %433 = load double, ptr %432, align 8, !tbaa !43
  %434 = fmul double %430, %433
  store double %434, ptr %432, align 8, !tbaa !43
  %435 = fdiv double %430, %230
  %436 = getelementptr i8, ptr %432, i64 64
  %437 = load double, ptr %436, align 8, !tbaa !43
  %438 = fmul double %435, %437
  store double %438, ptr %436, align 8, !tbaa !43
  %439 = fdiv double %435, %230
  %440 = getelementptr i8, ptr %432, i64 128
  %441 = load double, ptr %440, align 8, !tbaa !43
  %442 = fmul double %439, %441
  store double %442, ptr %440, align 8, !tbaa !43
  %443 = fdiv double %439, %230
  %444 = getelementptr i8, ptr %432, i64 192
  %445 = load double, ptr %444, align 8, !tbaa !43
  %446 = fmul double %443, %445
  store double %446, ptr %444, align 8, !tbaa !43
  %447 = add nuw nsw i64 %428, 1
  %448 = icmp slt i64 %428, %163
  br i1 %448, label %427, label %308, !llvm.loop !156

449:                                              ; preds = %308
  %450 = getelementptr inbounds nuw i8, ptr %162, i64 7576
  %451 = load ptr, ptr %450, align 8, !tbaa !57
  %452 = getelementptr double, ptr %451, i64 %6
  %453 = getelementptr inbounds nuw i8, ptr %162, i64 7568
  %454 = load ptr, ptr %453, align 16, !tbaa !47
  %455 = getelementptr double, ptr %454, i64 %6
  %456 = getelementptr inbounds nuw i8, ptr %162, i64 7560
  %457 = load ptr, ptr %456, align 8, !tbaa !58
  %458 = getelementptr double, ptr %457, i64 %6
  %459 = getelementptr inbounds nuw i8, ptr %162, i64 7600
  %460 = load ptr, ptr %459, align 16, !tbaa !48
  %461 = getelementptr double, ptr %460, i64 %6
  %462 = getelementptr inbounds nuw i8, ptr %162, i64 7592
  %463 = load ptr, ptr %462, align 8, !tbaa !65
  %464 = getelementptr double, ptr %463, i64 %6
  br label %478

465:                                              ; preds = %478, %308
  %466 = icmp slt i64 %164, 0
  br i1 %466, label %539, label %467

467:                                              ; preds = %465
  %468 = getelementptr inbounds nuw i8, ptr %162, i64 7744
  %469 = load ptr, ptr %468, align 64, !tbaa !60
  %470 = getelementptr double, ptr %469, i64 %6
  %471 = getelementptr inbounds nuw i8, ptr %162, i64 7736
  %472 = load ptr, ptr %471, align 8, !tbaa !50
  %473 = getelementptr double, ptr %472, i64 %6
  %474 = icmp eq i64 %164, 0
  br i1 %474, label %487, label %475

475:                                              ; preds = %467
  %476 = add nuw i64 %164, 1
  %477 = and i64 %476, -2
  br label %512

478:                                              ; preds = %449, %478
  %479 = phi i64 [ 0, %449 ], [ %485, %478 ]
  %480 = getelementptr <8 x double>, ptr %452, i64 %479
  store double %229, ptr %480, align 8, !tbaa !43
  %481 = getelementptr <8 x double>, ptr %455, i64 %479
  store double %229, ptr %481, align 8, !tbaa !43
  %482 = getelementptr <8 x double>, ptr %458, i64 %479
  store double %229, ptr %482, align 8, !tbaa !43
  %483 = getelementptr <8 x double>, ptr %461, i64 %479
  store double 1.000000e+00, ptr %483, align 8, !tbaa !43
  %484 = getelementptr <8 x double>, ptr %464, i64 %479
  store double 1.000000e+00, ptr %484, align 8, !tbaa !43
  %485 = add nuw nsw i64 %479, 1
  %486 = icmp eq i64 %485, %163
  br i1 %486, label %465, label %478, !llvm.loop !157

487:                                              ; preds = %526, %467
  %488 = phi i64 [ 0, %467 ], [ %530, %526 ]
  %489 = and i64 %164, 1
  %490 = icmp eq i64 %489, 0
  br i1 %490, label %491, label %499

491:                                              ; preds = %487
  %492 = icmp slt i64 %488, %164
  br i1 %492, label %495, label %493

493:                                              ; preds = %491
  %494 = load double, ptr %328, align 8, !tbaa !43
  br label %495

495:                                              ; preds = %493, %491
  %496 = phi double [ %494, %493 ], [ %323, %491 ]
  %497 = getelementptr <8 x double>, ptr %470, i64 %488
  store double %496, ptr %497, align 8, !tbaa !43
  %498 = getelementptr <8 x double>, ptr %473, i64 %488
  store double %496, ptr %498, align 8, !tbaa !43
  br label %499

499:                                              ; preds = %487, %495
  %500 = icmp eq i64 %164, 0
  br i1 %500, label %539, label %501

501:                                              ; preds = %499
  %502 = getelementptr inbounds nuw i8, ptr %162, i64 7696
  %503 = load ptr, ptr %502, align 16, !tbaa !62
  %504 = getelementptr double, ptr %503, i64 %6
  %505 = getelementptr inbounds nuw i8, ptr %162, i64 7688
  %506 = load ptr, ptr %505, align 8, !tbaa !51
  %507 = getelementptr double, ptr %506, i64 %6
  %508 = and i64 %164, 1
  %509 = icmp eq i64 %164, 1
  br i1 %509, label %533, label %510

510:                                              ; preds = %501
  %511 = and i64 %164, 9223372036854775806
  br label %543

512:                                              ; preds = %526, %475
  %513 = phi i64 [ 0, %475 ], [ %530, %526 ]
  %514 = phi i64 [ 0, %475 ], [ %531, %526 ]
  %515 = icmp slt i64 %513, %164
  br i1 %515, label %518, label %516

516:                                              ; preds = %512
  %517 = load double, ptr %328, align 8, !tbaa !43
  br label %518

518:                                              ; preds = %512, %516
  %519 = phi double [ %517, %516 ], [ %323, %512 ]
  %520 = getelementptr <8 x double>, ptr %470, i64 %513
  store double %519, ptr %520, align 8, !tbaa !43
  %521 = getelementptr <8 x double>, ptr %473, i64 %513
  store double %519, ptr %521, align 8, !tbaa !43
  %522 = or disjoint i64 %513, 1
  %523 = icmp slt i64 %522, %164
  br i1 %523, label %526, label %524

524:                                              ; preds = %518
  %525 = load double, ptr %328, align 8, !tbaa !43
  br label %526

526:                                              ; preds = %524, %518
  %527 = phi double [ %525, %524 ], [ %323, %518 ]
  %528 = getelementptr <8 x double>, ptr %470, i64 %522
  store double %527, ptr %528, align 8, !tbaa !43
  %529 = getelementptr <8 x double>, ptr %473, i64 %522
  store double %527, ptr %529, align 8, !tbaa !43
  %530 = add nuw i64 %513, 2
  %531 = add i64 %514, 2
  %532 = icmp eq i64 %531, %477
  br i1 %532, label %487, label %512, !llvm.loop !158

533:                                              ; preds = %543, %501
  %534 = phi i64 [ 0, %501 ], [ %551, %543 ]
  %535 = icmp eq i64 %508, 0
  br i1 %535, label %539, label %536

536:                                              ; preds = %533
  %537 = getelementptr <8 x double>, ptr %504, i64 %534
  store double %229, ptr %537, align 8, !tbaa !43
  %538 = getelementptr <8 x double>, ptr %507, i64 %534
  store double %229, ptr %538, align 8, !tbaa !43
  br label %539

539:                                              ; preds = %536, %533, %465, %499
  %540 = add nuw nsw i64 %161, 1
  %541 = load i64, ptr %27, align 8, !tbaa !20
  %542 = icmp slt i64 %540, %541
  br i1 %542, label %160, label %61, !llvm.loop !159

543:                                              ; preds = %543, %510
  %544 = phi i64 [ 0, %510 ], [ %551, %543 ]
  %545 = phi i64 [ 0, %510 ], [ %552, %543 ]
  %546 = getelementptr <8 x double>, ptr %504, i64 %544
  store double %229, ptr %546, align 8, !tbaa !43
  %547 = getelementptr <8 x double>, ptr %507, i64 %544
  store double %229, ptr %547, align 8, !tbaa !43
  %548 = or disjoint i64 %544, 1
  %549 = getelementptr <8 x double>, ptr %504, i64 %548
  store double %229, ptr %549, align 8, !tbaa !43
  %550 = getelementptr <8 x double>, ptr %507, i64 %548
  store double %229, ptr %550, align 8, !tbaa !43
  %551 = add nuw nsw i64 %544, 2
  %552 = add i64 %545, 2
  %553 = icmp eq i64 %552, %511
  br i1 %553, label %533, label %543, !llvm.loop !160
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(6160) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !161
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !162
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
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 6080
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
  %231 = getelementptr inbounds nuw i8, ptr %0, i64 6152
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
!31 = !{!32, !6, i64 7552}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 2944, !7, i64 3712, !7, i64 4480, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !6, i64 7552, !11, i64 7560, !11, i64 7568, !11, i64 7576, !11, i64 7584, !11, i64 7592, !11, i64 7600, !11, i64 7608, !11, i64 7616, !11, i64 7624, !11, i64 7632, !11, i64 7640, !11, i64 7648, !11, i64 7656, !11, i64 7664, !11, i64 7672, !11, i64 7680, !11, i64 7688, !11, i64 7696, !11, i64 7704, !11, i64 7712, !11, i64 7720, !11, i64 7728, !11, i64 7736, !11, i64 7744}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!34 = !{!11, !11, i64 0}
!35 = !{!32, !11, i64 7672}
!36 = distinct !{!36, !37}
!37 = !{!"llvm.loop.mustprogress"}
!38 = !{!17, !11, i64 6144}
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
