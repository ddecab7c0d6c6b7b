; Made by scripts/lanes.py from sources of sha256 9c4b69f1393fc4f1cb7d20e5878ee19a60b60d5a4e43b7007d23d4f7d8bd762c.
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
  %17 = add i64 %16, 6080
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
  br i1 %14, label %130, label %15

15:                                               ; preds = %3
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %17 = load i64, ptr %16, align 8, !tbaa !14
  %18 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  store i64 %17, ptr %18, align 64, !tbaa !16
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %20 = load i64, ptr %19, align 8, !tbaa !4
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  store i64 %20, ptr %21, align 8, !tbaa !20
  %22 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %23 = load i64, ptr %22, align 8, !tbaa !13
  %24 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  store i64 %23, ptr %24, align 16, !tbaa !21
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %26 = load i64, ptr %25, align 8, !tbaa !22
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  store i64 %26, ptr %27, align 8, !tbaa !23
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %29 = load double, ptr %28, align 8, !tbaa !24
  %30 = insertelement <8 x double> poison, double %29, i64 0
  %31 = shufflevector <8 x double> %30, <8 x double> poison, <8 x i32> zeroinitializer
  %32 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  store <8 x double> %31, ptr %32, align 64, !tbaa !25
  %33 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  store i64 0, ptr %33, align 32, !tbaa !26
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 5896
  store ptr %34, ptr %35, align 8, !tbaa !27
  %36 = getelementptr inbounds %struct.Piece, ptr %34, i64 %17
  %37 = icmp sgt i64 %17, 0
  br i1 %37, label %38, label %112

38:                                               ; preds = %15
  %39 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %40 = add nsw i64 %20, 1
  br label %41

41:                                               ; preds = %41, %38
  %42 = phi ptr [ %36, %38 ], [ %109, %41 ]
  %43 = phi i64 [ 0, %38 ], [ %110, %41 ]
  %44 = load ptr, ptr %35, align 8, !tbaa !27
  %45 = getelementptr inbounds nuw %struct.Piece, ptr %44, i64 %43
  %46 = load ptr, ptr %39, align 8, !tbaa !28
  %47 = getelementptr inbounds nuw i64, ptr %46, i64 %43
  %48 = load i64, ptr %47, align 8, !tbaa !29
  %49 = getelementptr inbounds nuw i8, ptr %45, i64 7552
  store i64 %48, ptr %49, align 64, !tbaa !30
  %50 = getelementptr inbounds nuw i8, ptr %45, i64 7560
  %51 = getelementptr inbounds nuw i8, ptr %45, i64 7568
  %52 = getelementptr inbounds nuw i8, ptr %45, i64 7576
  %53 = getelementptr inbounds nuw i8, ptr %45, i64 7584
  %54 = getelementptr inbounds nuw i8, ptr %45, i64 7592
  %55 = getelementptr inbounds nuw i8, ptr %45, i64 7600
  %56 = getelementptr inbounds nuw i8, ptr %45, i64 7608
  %57 = getelementptr inbounds nuw i8, ptr %45, i64 7616
  %58 = getelementptr inbounds nuw i8, ptr %45, i64 7624
  %59 = getelementptr inbounds nuw i8, ptr %45, i64 7632
  %60 = getelementptr inbounds nuw i8, ptr %45, i64 7640
  %61 = getelementptr inbounds nuw i8, ptr %45, i64 7648
  %62 = getelementptr inbounds nuw i8, ptr %45, i64 7656
  %63 = getelementptr inbounds nuw i8, ptr %45, i64 7664
  store ptr %42, ptr %50, align 8, !tbaa !33
  %64 = getelementptr inbounds <8 x double>, ptr %42, i64 %20
  store ptr %64, ptr %51, align 8, !tbaa !33
  %65 = getelementptr inbounds <8 x double>, ptr %64, i64 %20
  store ptr %65, ptr %52, align 8, !tbaa !33
  %66 = getelementptr inbounds <8 x double>, ptr %65, i64 %20
  store ptr %66, ptr %53, align 8, !tbaa !33
  %67 = getelementptr inbounds <8 x double>, ptr %66, i64 %20
  store ptr %67, ptr %54, align 8, !tbaa !33
  %68 = getelementptr inbounds <8 x double>, ptr %67, i64 %20
  store ptr %68, ptr %55, align 8, !tbaa !33
  %69 = getelementptr inbounds <8 x double>, ptr %68, i64 %20
  store ptr %69, ptr %56, align 8, !tbaa !33
  %70 = getelementptr inbounds <8 x double>, ptr %69, i64 %20
  store ptr %70, ptr %57, align 8, !tbaa !33
  %71 = getelementptr inbounds <8 x double>, ptr %70, i64 %20
  store ptr %71, ptr %58, align 8, !tbaa !33
  %72 = getelementptr inbounds <8 x double>, ptr %71, i64 %20
  store ptr %72, ptr %59, align 8, !tbaa !33
  %73 = getelementptr inbounds <8 x double>, ptr %72, i64 %20
  store ptr %73, ptr %60, align 8, !tbaa !33
  %74 = getelementptr inbounds <8 x double>, ptr %73, i64 %20
  store ptr %74, ptr %61, align 8, !tbaa !33
  %75 = getelementptr inbounds <8 x double>, ptr %74, i64 %20
  store ptr %75, ptr %62, align 8, !tbaa !33
  %76 = getelementptr inbounds <8 x double>, ptr %75, i64 %20
  store ptr %76, ptr %63, align 8, !tbaa !33
  %77 = getelementptr inbounds <8 x double>, ptr %76, i64 %20
  %78 = getelementptr inbounds nuw i8, ptr %45, i64 7672
  store ptr %77, ptr %78, align 8, !tbaa !34
  %79 = icmp eq i64 %48, 0
  %80 = select i1 %79, i64 0, i64 2
  %81 = shl i64 %40, %80
  %82 = getelementptr inbounds <8 x double>, ptr %77, i64 %81
  %83 = getelementptr inbounds nuw i8, ptr %45, i64 7680
  %84 = getelementptr inbounds nuw i8, ptr %45, i64 7688
  %85 = getelementptr inbounds nuw i8, ptr %45, i64 7696
  %86 = getelementptr inbounds nuw i8, ptr %45, i64 7704
  %87 = getelementptr inbounds nuw i8, ptr %45, i64 7712
  %88 = getelementptr inbounds nuw i8, ptr %45, i64 7720
  %89 = getelementptr inbounds nuw i8, ptr %45, i64 7728
  %90 = getelementptr inbounds nuw i8, ptr %45, i64 7736
  %91 = getelementptr inbounds nuw i8, ptr %45, i64 7744
  store ptr %82, ptr %83, align 8, !tbaa !33
  %92 = getelementptr <8 x double>, ptr %82, i64 %23
  %93 = getelementptr i8, ptr %92, i64 64
  store ptr %93, ptr %84, align 8, !tbaa !33
  %94 = getelementptr <8 x double>, ptr %93, i64 %23
  %95 = getelementptr i8, ptr %94, i64 64
  store ptr %95, ptr %85, align 8, !tbaa !33
  %96 = getelementptr <8 x double>, ptr %95, i64 %23
  %97 = getelementptr i8, ptr %96, i64 64
  store ptr %97, ptr %86, align 8, !tbaa !33
  %98 = getelementptr <8 x double>, ptr %97, i64 %23
  %99 = getelementptr i8, ptr %98, i64 64
  store ptr %99, ptr %87, align 8, !tbaa !33
  %100 = getelementptr <8 x double>, ptr %99, i64 %23
  %101 = getelementptr i8, ptr %100, i64 64
  store ptr %101, ptr %88, align 8, !tbaa !33
  %102 = getelementptr <8 x double>, ptr %101, i64 %23
  %103 = getelementptr i8, ptr %102, i64 64
  store ptr %103, ptr %89, align 8, !tbaa !33
  %104 = getelementptr <8 x double>, ptr %103, i64 %23
  %105 = getelementptr i8, ptr %104, i64 64
  store ptr %105, ptr %90, align 8, !tbaa !33
  %106 = getelementptr <8 x double>, ptr %105, i64 %23
  %107 = getelementptr i8, ptr %106, i64 64
  store ptr %107, ptr %91, align 8, !tbaa !33
  %108 = getelementptr <8 x double>, ptr %107, i64 %23
  %109 = getelementptr i8, ptr %108, i64 64
  %110 = add nuw nsw i64 %43, 1
  %111 = icmp eq i64 %110, %17
  br i1 %111, label %112, label %41, !llvm.loop !35

112:                                              ; preds = %41, %15
  %113 = phi ptr [ %36, %15 ], [ %109, %41 ]
  %114 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  store ptr %113, ptr %114, align 64, !tbaa !37
  %115 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %116 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  br label %117

117:                                              ; preds = %112, %127
  %118 = phi i64 [ 0, %112 ], [ %128, %127 ]
  %119 = load i64, ptr %33, align 32, !tbaa !26
  %120 = load i64, ptr %0, align 8, !tbaa !38
  %121 = icmp slt i64 %119, %120
  %122 = trunc nuw nsw i64 %118 to i32
  br i1 %121, label %123, label %124

123:                                              ; preds = %117
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %122) #6
  br label %127

124:                                              ; preds = %117
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %122, i64 noundef 0) #6
  %125 = getelementptr inbounds nuw i64, ptr %115, i64 %118
  store i64 0, ptr %125, align 8, !tbaa !29
  %126 = getelementptr inbounds nuw i64, ptr %116, i64 %118
  store i64 0, ptr %126, align 8, !tbaa !29
  br label %127

127:                                              ; preds = %124, %123
  %128 = add nuw nsw i64 %118, 1
  %129 = icmp eq i64 %128, 8
  br i1 %129, label %130, label %117, !llvm.loop !39

130:                                              ; preds = %127, %3
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %134 = load i64, ptr %132, align 8, !tbaa !40
  %135 = load i64, ptr %133, align 8, !tbaa !41
  %136 = sub nsw i64 %134, %135
  %137 = icmp slt i64 %136, 16
  br i1 %137, label %4724, label %138

138:                                              ; preds = %130
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 5896
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %174 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %176 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %177 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %234 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %236 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %237 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %239 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 5760
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 5832
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 5840
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 5848
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 5856
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 5864
  %276 = getelementptr inbounds nuw i8, ptr %1, i64 5872
  %277 = getelementptr inbounds nuw i8, ptr %1, i64 5880
  br label %278

278:                                              ; preds = %539, %138
  %279 = phi i64 [ 0, %138 ], [ %540, %539 ]
  %280 = phi i1 [ true, %138 ], [ %541, %539 ]
  %281 = getelementptr inbounds nuw i64, ptr %131, i64 %279
  %282 = load i64, ptr %281, align 8, !tbaa !29
  %283 = icmp eq i64 %282, 0
  br i1 %283, label %535, label %284

284:                                              ; preds = %278
  %285 = getelementptr inbounds nuw [8 x double], ptr %139, i64 0, i64 %279
  %286 = load double, ptr %285, align 8, !tbaa !42
  %287 = fcmp oeq double %286, 0.000000e+00
  br i1 %287, label %535, label %288

288:                                              ; preds = %284
  %289 = load i64, ptr %140, align 8, !tbaa !20
  %290 = load i64, ptr %141, align 16, !tbaa !21
  %291 = getelementptr inbounds nuw [8 x i64], ptr %142, i64 0, i64 %279
  %292 = load i64, ptr %291, align 8, !tbaa !29
  %293 = load ptr, ptr %143, align 8, !tbaa !43
  %294 = mul nsw i64 %292, 40
  %295 = getelementptr inbounds i8, ptr %293, i64 %294
  %296 = getelementptr inbounds nuw double, ptr %144, i64 %279
  %297 = load double, ptr %296, align 8, !tbaa !42
  store double %297, ptr %295, align 8, !tbaa !42
  %298 = getelementptr inbounds nuw double, ptr %145, i64 %279
  %299 = load double, ptr %298, align 8, !tbaa !42
  %300 = getelementptr inbounds nuw i8, ptr %295, i64 8
  store double %299, ptr %300, align 8, !tbaa !42
  %301 = getelementptr inbounds nuw double, ptr %146, i64 %279
  %302 = load double, ptr %301, align 8, !tbaa !42
  %303 = getelementptr inbounds nuw i8, ptr %295, i64 16
  store double %302, ptr %303, align 8, !tbaa !42
  %304 = getelementptr inbounds nuw double, ptr %147, i64 %279
  %305 = load double, ptr %304, align 8, !tbaa !42
  %306 = getelementptr inbounds nuw i8, ptr %295, i64 24
  store double %305, ptr %306, align 8, !tbaa !42
  %307 = getelementptr inbounds nuw double, ptr %148, i64 %279
  %308 = load double, ptr %307, align 8, !tbaa !42
  %309 = getelementptr inbounds nuw i8, ptr %295, i64 32
  store double %308, ptr %309, align 8, !tbaa !42
  %310 = load i64, ptr %149, align 64, !tbaa !16
  %311 = icmp sgt i64 %310, 0
  br i1 %311, label %312, label %519

312:                                              ; preds = %288
  %313 = load ptr, ptr %150, align 8, !tbaa !27
  %314 = load ptr, ptr %151, align 8, !tbaa !44
  %315 = mul nsw i64 %310, %292
  %316 = mul i64 %289, 3
  %317 = load ptr, ptr %152, align 8, !tbaa !45
  %318 = icmp sgt i64 %289, 0
  %319 = getelementptr inbounds nuw double, ptr %10, i64 %279
  %320 = shl i64 %289, 4
  %321 = getelementptr inbounds nuw double, ptr %11, i64 %279
  %322 = icmp sgt i64 %290, 0
  %323 = and i64 %290, 1
  %324 = icmp eq i64 %290, 1
  %325 = and i64 %290, 9223372036854775806
  %326 = icmp eq i64 %323, 0
  br label %327

327:                                              ; preds = %427, %312
  %328 = phi i64 [ 0, %312 ], [ %494, %427 ]
  %329 = getelementptr inbounds nuw %struct.Piece, ptr %313, i64 %328
  %330 = getelementptr inbounds nuw i8, ptr %329, i64 1536
  %331 = getelementptr inbounds nuw double, ptr %330, i64 %279
  %332 = load double, ptr %331, align 8, !tbaa !42
  %333 = getelementptr inbounds nuw i8, ptr %329, i64 4352
  %334 = getelementptr inbounds nuw double, ptr %333, i64 %279
  %335 = load double, ptr %334, align 8, !tbaa !42
  %336 = add nsw i64 %328, %315
  %337 = mul i64 %316, %336
  %338 = getelementptr inbounds double, ptr %314, i64 %337
  %339 = mul nsw i64 %336, 40
  %340 = getelementptr inbounds i8, ptr %317, i64 %339
  br i1 %318, label %341, label %358

341:                                              ; preds = %327
  %342 = getelementptr inbounds nuw i8, ptr %329, i64 7568
  %343 = load ptr, ptr %342, align 16, !tbaa !46
  %344 = getelementptr inbounds nuw i8, ptr %329, i64 7600
  %345 = load ptr, ptr %344, align 16, !tbaa !47
  %346 = getelementptr double, ptr %345, i64 %279
  %347 = getelementptr double, ptr %338, i64 %289
  %348 = getelementptr inbounds nuw i8, ptr %329, i64 7656
  %349 = load ptr, ptr %348, align 8, !tbaa !48
  %350 = getelementptr inbounds nuw i8, ptr %329, i64 7552
  %351 = load i64, ptr %350, align 64, !tbaa !30
  %352 = getelementptr inbounds nuw i8, ptr %329, i64 4416
  %353 = getelementptr inbounds nuw i8, ptr %329, i64 384
  %354 = getelementptr inbounds nuw i8, ptr %329, i64 448
  %355 = getelementptr inbounds nuw i8, ptr %329, i64 512
  %356 = getelementptr inbounds nuw i8, ptr %329, i64 640
  %357 = getelementptr i8, ptr %338, i64 %320
  br label %371

358:                                              ; preds = %402, %327
  %359 = phi double [ %335, %327 ], [ %410, %402 ]
  br i1 %322, label %360, label %427

360:                                              ; preds = %358
  %361 = getelementptr inbounds nuw i8, ptr %329, i64 7736
  %362 = load ptr, ptr %361, align 8, !tbaa !49
  %363 = getelementptr double, ptr %362, i64 %279
  %364 = getelementptr inbounds nuw i8, ptr %329, i64 768
  %365 = getelementptr inbounds nuw double, ptr %364, i64 %279
  %366 = load double, ptr %365, align 8, !tbaa !42
  %367 = getelementptr inbounds nuw i8, ptr %329, i64 7688
  %368 = load ptr, ptr %367, align 8, !tbaa !50
  %369 = getelementptr double, ptr %368, i64 %279
  %370 = load double, ptr %363, align 8, !tbaa !42
  br i1 %324, label %413, label %496

371:                                              ; preds = %402, %341
  %372 = phi double [ %335, %341 ], [ %410, %402 ]
  %373 = phi i64 [ 0, %341 ], [ %411, %402 ]
  %374 = getelementptr inbounds nuw <8 x double>, ptr %343, i64 %373
  %375 = getelementptr inbounds nuw double, ptr %374, i64 %279
  %376 = load double, ptr %375, align 8, !tbaa !42
  %377 = getelementptr inbounds nuw double, ptr %338, i64 %373
  store double %376, ptr %377, align 8, !tbaa !42
  %378 = getelementptr <8 x double>, ptr %346, i64 %373
  %379 = load double, ptr %378, align 8, !tbaa !42
  %380 = getelementptr double, ptr %347, i64 %373
  store double %379, ptr %380, align 8, !tbaa !42
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %381 = getelementptr inbounds nuw <8 x double>, ptr %349, i64 %373
  %382 = load <8 x double>, ptr %381, align 64, !tbaa !25
  %383 = icmp slt i64 %373, %351
  br i1 %383, label %384, label %389

384:                                              ; preds = %371
  %385 = load <8 x double>, ptr %330, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %386 = load <8 x double>, ptr %374, align 64, !tbaa !25
  %387 = load <8 x double>, ptr %356, align 64, !tbaa !25
  %388 = fmul <8 x double> %386, %387
  br label %402

389:                                              ; preds = %371
  %390 = load <8 x double>, ptr %352, align 64, !tbaa !25
  %391 = load <8 x double>, ptr %330, align 64, !tbaa !25
  %392 = fsub <8 x double> %390, %391
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %393 = load <8 x double>, ptr %374, align 64, !tbaa !25
  %394 = load <8 x double>, ptr %353, align 64, !tbaa !25
  %395 = load <8 x double>, ptr %354, align 64, !tbaa !25
  %396 = load <8 x double>, ptr %355, align 64, !tbaa !25
  %397 = fmul <8 x double> %393, %396
  %398 = fmul <8 x double> %397, splat (double 0x3FD5555555555555)
  %399 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %395, <8 x double> splat (double 5.000000e-01), <8 x double> %398)
  %400 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %393, <8 x double> %399, <8 x double> %394)
  %401 = fmul <8 x double> %393, %400
  br label %402

402:                                              ; preds = %389, %384
  %403 = phi <8 x double> [ %385, %384 ], [ %392, %389 ]
  %404 = phi <8 x double> [ %388, %384 ], [ %401, %389 ]
  %405 = fmul <8 x double> %382, %403
  store <8 x double> %405, ptr %10, align 64, !tbaa !25
  %406 = fmul <8 x double> %405, %404
  store <8 x double> %406, ptr %11, align 64, !tbaa !25
  %407 = load double, ptr %319, align 8, !tbaa !42
  %408 = getelementptr double, ptr %357, i64 %373
  store double %407, ptr %408, align 8, !tbaa !42
  %409 = load double, ptr %321, align 8, !tbaa !42
  %410 = fadd double %372, %409
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %411 = add nuw nsw i64 %373, 1
  %412 = icmp eq i64 %411, %289
  br i1 %412, label %358, label %371, !llvm.loop !51

413:                                              ; preds = %496, %360
  %414 = phi double [ poison, %360 ], [ %516, %496 ]
  %415 = phi double [ %370, %360 ], [ %511, %496 ]
  %416 = phi double [ %359, %360 ], [ %516, %496 ]
  %417 = phi i64 [ 0, %360 ], [ %509, %496 ]
  br i1 %326, label %427, label %418

418:                                              ; preds = %413
  %419 = getelementptr <8 x double>, ptr %363, i64 %417
  %420 = getelementptr i8, ptr %419, i64 64
  %421 = load double, ptr %420, align 8, !tbaa !42
  %422 = fsub double %421, %415
  %423 = fmul double %366, %422
  %424 = getelementptr <8 x double>, ptr %369, i64 %417
  %425 = load double, ptr %424, align 8, !tbaa !42
  %426 = tail call double @llvm.fmuladd.f64(double %423, double %425, double %416)
  br label %427

427:                                              ; preds = %418, %413, %358
  %428 = phi double [ %359, %358 ], [ %414, %413 ], [ %426, %418 ]
  %429 = getelementptr inbounds nuw i8, ptr %329, i64 960
  %430 = getelementptr inbounds nuw double, ptr %429, i64 %279
  %431 = load double, ptr %430, align 8, !tbaa !42
  %432 = getelementptr inbounds nuw i8, ptr %329, i64 384
  %433 = getelementptr inbounds nuw double, ptr %432, i64 %279
  %434 = load double, ptr %433, align 8, !tbaa !42
  %435 = getelementptr inbounds nuw i8, ptr %329, i64 448
  %436 = getelementptr inbounds nuw double, ptr %435, i64 %279
  %437 = load double, ptr %436, align 8, !tbaa !42
  %438 = getelementptr inbounds nuw i8, ptr %329, i64 512
  %439 = getelementptr inbounds nuw double, ptr %438, i64 %279
  %440 = load double, ptr %439, align 8, !tbaa !42
  %441 = fmul double %431, %440
  %442 = fdiv double %441, 3.000000e+00
  %443 = tail call double @llvm.fmuladd.f64(double %437, double 5.000000e-01, double %442)
  %444 = tail call double @llvm.fmuladd.f64(double %431, double %443, double %434)
  %445 = fmul double %431, %444
  %446 = getelementptr inbounds nuw i8, ptr %329, i64 1408
  %447 = getelementptr inbounds nuw double, ptr %446, i64 %279
  %448 = load double, ptr %447, align 8, !tbaa !42
  %449 = fsub double %448, %332
  %450 = getelementptr inbounds nuw i8, ptr %329, i64 640
  %451 = getelementptr inbounds nuw double, ptr %450, i64 %279
  %452 = load double, ptr %451, align 8, !tbaa !42
  %453 = fmul double %332, %452
  %454 = fmul double %431, %453
  %455 = tail call double @llvm.fmuladd.f64(double %449, double %445, double %454)
  %456 = getelementptr inbounds nuw i8, ptr %329, i64 4096
  %457 = getelementptr inbounds nuw double, ptr %456, i64 %279
  %458 = load double, ptr %457, align 8, !tbaa !42
  %459 = getelementptr inbounds nuw i8, ptr %329, i64 4160
  %460 = getelementptr inbounds nuw double, ptr %459, i64 %279
  %461 = load double, ptr %460, align 8, !tbaa !42
  %462 = fsub double %458, %461
  %463 = fsub double %428, %455
  %464 = fsub double %462, %463
  %465 = fcmp ogt double %458, 0.000000e+00
  %466 = fneg double %458
  %467 = select i1 %465, double %458, double %466
  %468 = fcmp ogt double %461, 0.000000e+00
  %469 = fneg double %461
  %470 = select i1 %468, double %461, double %469
  %471 = fadd double %467, %470
  %472 = fcmp ogt double %464, 0.000000e+00
  %473 = fneg double %464
  %474 = select i1 %472, double %464, double %473
  %475 = fcmp ogt double %471, 1.000000e+00
  %476 = select i1 %475, double %471, double 1.000000e+00
  %477 = fdiv double %474, %476
  store double %477, ptr %340, align 8, !tbaa !42
  %478 = getelementptr inbounds nuw i8, ptr %329, i64 4032
  %479 = getelementptr inbounds nuw double, ptr %478, i64 %279
  %480 = load double, ptr %479, align 8, !tbaa !42
  %481 = getelementptr inbounds nuw i8, ptr %340, i64 8
  store double %480, ptr %481, align 8, !tbaa !42
  %482 = getelementptr inbounds nuw i8, ptr %329, i64 3840
  %483 = getelementptr inbounds nuw double, ptr %482, i64 %279
  %484 = load double, ptr %483, align 8, !tbaa !42
  %485 = getelementptr inbounds nuw i8, ptr %340, i64 16
  store double %484, ptr %485, align 8, !tbaa !42
  %486 = getelementptr inbounds nuw i8, ptr %329, i64 3904
  %487 = getelementptr inbounds nuw double, ptr %486, i64 %279
  %488 = load double, ptr %487, align 8, !tbaa !42
  %489 = getelementptr inbounds nuw i8, ptr %340, i64 24
  store double %488, ptr %489, align 8, !tbaa !42
  %490 = getelementptr inbounds nuw i8, ptr %329, i64 3776
  %491 = getelementptr inbounds nuw double, ptr %490, i64 %279
  %492 = load double, ptr %491, align 8, !tbaa !42
  %493 = getelementptr inbounds nuw i8, ptr %340, i64 32
  store double %492, ptr %493, align 8, !tbaa !42
  %494 = add nuw nsw i64 %328, 1
  %495 = icmp eq i64 %494, %310
  br i1 %495, label %519, label %327, !llvm.loop !52

496:                                              ; preds = %360, %496
  %497 = phi double [ %511, %496 ], [ %370, %360 ]
  %498 = phi double [ %516, %496 ], [ %359, %360 ]
  %499 = phi i64 [ %509, %496 ], [ 0, %360 ]
  %500 = phi i64 [ %517, %496 ], [ 0, %360 ]
  %501 = or disjoint i64 %499, 1
  %502 = getelementptr <8 x double>, ptr %363, i64 %501
  %503 = load double, ptr %502, align 8, !tbaa !42
  %504 = fsub double %503, %497
  %505 = fmul double %366, %504
  %506 = getelementptr <8 x double>, ptr %369, i64 %499
  %507 = load double, ptr %506, align 8, !tbaa !42
  %508 = tail call double @llvm.fmuladd.f64(double %505, double %507, double %498)
  %509 = add nuw nsw i64 %499, 2
  %510 = getelementptr <8 x double>, ptr %363, i64 %509
  %511 = load double, ptr %510, align 8, !tbaa !42
  %512 = fsub double %511, %503
  %513 = fmul double %366, %512
  %514 = getelementptr <8 x double>, ptr %369, i64 %501
  %515 = load double, ptr %514, align 8, !tbaa !42
  %516 = tail call double @llvm.fmuladd.f64(double %513, double %515, double %508)
  %517 = add i64 %500, 2
  %518 = icmp eq i64 %517, %325
  br i1 %518, label %413, label %496, !llvm.loop !53

519:                                              ; preds = %427, %288
  %520 = load i64, ptr %153, align 32, !tbaa !26
  %521 = load i64, ptr %0, align 8, !tbaa !38
  %522 = icmp slt i64 %520, %521
  br i1 %522, label %525, label %523

523:                                              ; preds = %519
  store i64 0, ptr %281, align 8, !tbaa !29
  %524 = getelementptr inbounds nuw i64, ptr %154, i64 %279
  store i64 0, ptr %524, align 8, !tbaa !29
  br label %532

525:                                              ; preds = %519
  %526 = trunc nuw nsw i64 %279 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %526) #6
  %527 = load i64, ptr %281, align 8, !tbaa !29
  %528 = icmp eq i64 %527, 0
  br i1 %528, label %532, label %529

529:                                              ; preds = %525
  %530 = load double, ptr %285, align 8, !tbaa !42
  %531 = fcmp oeq double %530, 0.000000e+00
  br label %532

532:                                              ; preds = %523, %529, %525
  %533 = phi i1 [ true, %525 ], [ %531, %529 ], [ true, %523 ]
  %534 = and i1 %280, %533
  br label %535

535:                                              ; preds = %532, %284, %278
  %536 = phi i1 [ %280, %284 ], [ %534, %532 ], [ %280, %278 ]
  %537 = add nuw nsw i64 %279, 1
  %538 = icmp eq i64 %537, 8
  br i1 %538, label %542, label %539

539:                                              ; preds = %535, %543
  %540 = phi i64 [ %537, %535 ], [ 0, %543 ]
  %541 = phi i1 [ %536, %535 ], [ true, %543 ]
  br label %278, !llvm.loop !54

542:                                              ; preds = %535
  br i1 %536, label %548, label %543

543:                                              ; preds = %4681, %4723, %4720, %3159, %3466, %542
  %544 = load i64, ptr %132, align 8, !tbaa !40
  %545 = load i64, ptr %133, align 8, !tbaa !41
  %546 = sub nsw i64 %544, %545
  %547 = icmp slt i64 %546, 16
  br i1 %547, label %4724, label %539

548:                                              ; preds = %542
  %549 = load <8 x i64>, ptr %131, align 64, !tbaa !25
  %550 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %549)
  %551 = icmp eq i64 %550, 0
  br i1 %551, label %4724, label %552

552:                                              ; preds = %548
  %553 = load <8 x i64>, ptr %154, align 64, !tbaa !25
  %554 = and <8 x i64> %553, %549
  %555 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %554)
  %556 = icmp eq i64 %555, 0
  %557 = load i64, ptr %149, align 64, !tbaa !16
  br i1 %556, label %1132, label %558

558:                                              ; preds = %552
  %559 = load <8 x double>, ptr %155, align 64, !tbaa !25
  %560 = load <8 x double>, ptr %156, align 64, !tbaa !25
  %561 = fcmp olt <8 x double> %559, %560
  %562 = select <8 x i1> %561, <8 x double> %559, <8 x double> %560
  %563 = load <8 x double>, ptr %157, align 64, !tbaa !25
  %564 = load <8 x double>, ptr %158, align 64, !tbaa !25
  %565 = load <8 x double>, ptr %159, align 64, !tbaa !25
  %566 = load <8 x double>, ptr %160, align 64, !tbaa !25
  %567 = fsub <8 x double> %565, %566
  %568 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %564, <8 x double> %567, <8 x double> %563)
  %569 = fcmp olt <8 x double> %562, %568
  %570 = select <8 x i1> %569, <8 x double> %562, <8 x double> %568
  %571 = load <8 x double>, ptr %161, align 64, !tbaa !25
  %572 = load <8 x double>, ptr %162, align 64, !tbaa !25
  %573 = fadd <8 x double> %571, %572
  %574 = fsub <8 x double> %573, %565
  %575 = fmul <8 x double> %570, splat (double 0x3FF000010C6F7A0B)
  %576 = fcmp ole <8 x double> %574, %575
  %577 = load <8 x double>, ptr %163, align 64, !tbaa !25
  %578 = fcmp ogt <8 x double> %577, %570
  %579 = select <8 x i1> %578, <8 x double> %577, <8 x double> %570
  %580 = icmp ne <8 x i64> %554, zeroinitializer
  %581 = select <8 x i1> %576, <8 x i1> %580, <8 x i1> zeroinitializer
  %582 = select <8 x i1> %581, <8 x double> %579, <8 x double> %577
  store <8 x double> %582, ptr %163, align 64, !tbaa !25
  %583 = fmul <8 x double> %570, splat (double 2.000000e+00)
  %584 = fcmp uge <8 x double> %574, %583
  %585 = fmul <8 x double> %574, splat (double 5.000000e-01)
  %586 = select <8 x i1> %584, <8 x double> %570, <8 x double> %585
  %587 = select <8 x i1> %576, <8 x double> %574, <8 x double> %586
  %588 = icmp sgt i64 %557, 0
  %589 = load <8 x double>, ptr %164, align 64, !tbaa !25
  br i1 %588, label %590, label %637

590:                                              ; preds = %558
  %591 = load ptr, ptr %150, align 8, !tbaa !27
  br label %592

592:                                              ; preds = %590, %592
  %593 = phi <8 x double> [ %587, %590 ], [ %634, %592 ]
  %594 = phi i64 [ 0, %590 ], [ %635, %592 ]
  %595 = getelementptr inbounds nuw %struct.Piece, ptr %591, i64 %594
  %596 = getelementptr inbounds nuw i8, ptr %595, i64 3776
  %597 = load <8 x double>, ptr %596, align 64, !tbaa !25
  %598 = getelementptr inbounds nuw i8, ptr %595, i64 1472
  %599 = load <8 x double>, ptr %598, align 64, !tbaa !25
  %600 = fsub <8 x double> %597, %599
  %601 = getelementptr inbounds nuw i8, ptr %595, i64 832
  %602 = load <8 x double>, ptr %601, align 64, !tbaa !25
  %603 = fmul <8 x double> %600, %602
  %604 = getelementptr inbounds nuw i8, ptr %595, i64 1600
  %605 = load <8 x double>, ptr %604, align 64, !tbaa !25
  %606 = getelementptr inbounds nuw i8, ptr %595, i64 4032
  %607 = load <8 x double>, ptr %606, align 64, !tbaa !25
  %608 = fsub <8 x double> %605, %607
  %609 = getelementptr inbounds nuw i8, ptr %595, i64 7360
  %610 = load <8 x i64>, ptr %609, align 64, !tbaa !25
  %611 = getelementptr inbounds nuw i8, ptr %595, i64 7296
  %612 = load <8 x double>, ptr %611, align 64, !tbaa !25
  %613 = fcmp une <8 x double> %612, splat (double 1.000000e+00)
  %614 = select <8 x i1> %613, <8 x double> %603, <8 x double> %608
  %615 = getelementptr inbounds nuw i8, ptr %595, i64 3840
  %616 = load <8 x double>, ptr %615, align 64, !tbaa !25
  %617 = icmp eq <8 x i64> %610, zeroinitializer
  %618 = select <8 x i1> %617, <8 x double> %616, <8 x double> %614
  %619 = getelementptr inbounds nuw i8, ptr %595, i64 5632
  %620 = load <8 x double>, ptr %619, align 64, !tbaa !25
  %621 = getelementptr inbounds nuw i8, ptr %595, i64 7168
  %622 = load <8 x double>, ptr %621, align 64, !tbaa !25
  %623 = fdiv <8 x double> %622, %589
  %624 = select <8 x i1> %617, <8 x double> %623, <8 x double> zeroinitializer
  %625 = fsub <8 x double> %620, %624
  %626 = fcmp ule <8 x double> %618, zeroinitializer
  %627 = fcmp ule <8 x double> %625, zeroinitializer
  %628 = or <8 x i1> %626, %627
  %629 = fdiv <8 x double> %618, %625
  %630 = fcmp ogt <8 x double> %629, splat (double 1.000000e-03)
  %631 = select <8 x i1> %630, <8 x double> %629, <8 x double> splat (double 1.000000e-03)
  %632 = fcmp olt <8 x double> %593, %631
  %633 = select <8 x i1> %628, <8 x i1> splat (i1 true), <8 x i1> %632
  %634 = select <8 x i1> %633, <8 x double> %593, <8 x double> %631
  %635 = add nuw nsw i64 %594, 1
  %636 = icmp eq i64 %635, %557
  br i1 %636, label %637, label %592, !llvm.loop !55

637:                                              ; preds = %592, %558
  %638 = phi <8 x double> [ %587, %558 ], [ %634, %592 ]
  %639 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %640 = icmp eq <8 x i64> %554, zeroinitializer
  %641 = select <8 x i1> %640, <8 x double> %639, <8 x double> %638
  store <8 x double> %641, ptr %165, align 64, !tbaa !25
  %642 = load <8 x i64>, ptr %166, align 64, !tbaa !25
  %643 = fdiv <8 x double> %641, %589
  %644 = fdiv <8 x double> splat (double 1.000000e+00), %641
  %645 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %643, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %646 = fadd <8 x double> %643, splat (double 1.000000e+00)
  %647 = fdiv <8 x double> %645, %646
  %648 = fmul <8 x double> %644, %647
  %649 = icmp eq <8 x i64> %642, zeroinitializer
  %650 = select <8 x i1> %649, <8 x double> %648, <8 x double> %644
  %651 = fneg <8 x double> %644
  %652 = fneg <8 x double> %646
  %653 = fmul <8 x double> %644, %652
  %654 = select <8 x i1> %649, <8 x double> %653, <8 x double> %651
  %655 = fmul <8 x double> %643, %643
  %656 = fdiv <8 x double> %655, %646
  %657 = fmul <8 x double> %644, %656
  %658 = select <8 x i1> %649, <8 x double> %657, <8 x double> zeroinitializer
  %659 = load <8 x double>, ptr %167, align 64, !tbaa !25
  %660 = select <8 x i1> %640, <8 x double> %659, <8 x double> %650
  store <8 x double> %660, ptr %167, align 64, !tbaa !25
  %661 = load <8 x double>, ptr %168, align 64, !tbaa !25
  %662 = select <8 x i1> %640, <8 x double> %661, <8 x double> %654
  store <8 x double> %662, ptr %168, align 64, !tbaa !25
  %663 = load <8 x double>, ptr %169, align 64, !tbaa !25
  %664 = select <8 x i1> %640, <8 x double> %663, <8 x double> %658
  store <8 x double> %664, ptr %169, align 64, !tbaa !25
  %665 = select <8 x i1> %649, <8 x double> %643, <8 x double> zeroinitializer
  %666 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %667 = load <8 x double>, ptr %172, align 64, !tbaa !25
  %668 = fsub <8 x double> %666, %667
  %669 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %665, <8 x double> %668, <8 x double> %666)
  %670 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %671 = select <8 x i1> %640, <8 x double> %670, <8 x double> %669
  store <8 x double> %671, ptr %170, align 64, !tbaa !25
  %672 = load <8 x double>, ptr %243, align 64, !tbaa !25
  %673 = load <8 x double>, ptr %244, align 64, !tbaa !25
  %674 = fsub <8 x double> %672, %673
  %675 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %665, <8 x double> %674, <8 x double> %672)
  %676 = load <8 x double>, ptr %242, align 64, !tbaa !25
  %677 = select <8 x i1> %640, <8 x double> %676, <8 x double> %675
  store <8 x double> %677, ptr %242, align 64, !tbaa !25
  %678 = load <8 x double>, ptr %246, align 64, !tbaa !25
  %679 = load <8 x double>, ptr %247, align 64, !tbaa !25
  %680 = fsub <8 x double> %678, %679
  %681 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %665, <8 x double> %680, <8 x double> %678)
  %682 = load <8 x double>, ptr %245, align 64, !tbaa !25
  %683 = select <8 x i1> %640, <8 x double> %682, <8 x double> %681
  store <8 x double> %683, ptr %245, align 64, !tbaa !25
  %684 = load <8 x double>, ptr %249, align 64, !tbaa !25
  %685 = load <8 x double>, ptr %250, align 64, !tbaa !25
  %686 = fsub <8 x double> %684, %685
  %687 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %665, <8 x double> %686, <8 x double> %684)
  %688 = load <8 x double>, ptr %248, align 64, !tbaa !25
  %689 = select <8 x i1> %640, <8 x double> %688, <8 x double> %687
  store <8 x double> %689, ptr %248, align 64, !tbaa !25
  %690 = load <8 x double>, ptr %252, align 64, !tbaa !25
  %691 = load <8 x double>, ptr %253, align 64, !tbaa !25
  %692 = fsub <8 x double> %690, %691
  %693 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %665, <8 x double> %692, <8 x double> %690)
  %694 = load <8 x double>, ptr %251, align 64, !tbaa !25
  %695 = select <8 x i1> %640, <8 x double> %694, <8 x double> %693
  store <8 x double> %695, ptr %251, align 64, !tbaa !25
  %696 = load <8 x double>, ptr %255, align 64, !tbaa !25
  %697 = load <8 x double>, ptr %256, align 64, !tbaa !25
  %698 = fsub <8 x double> %696, %697
  %699 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %665, <8 x double> %698, <8 x double> %696)
  %700 = load <8 x double>, ptr %254, align 64, !tbaa !25
  %701 = select <8 x i1> %640, <8 x double> %700, <8 x double> %699
  store <8 x double> %701, ptr %254, align 64, !tbaa !25
  br i1 %588, label %702, label %1042

702:                                              ; preds = %637, %1005
  %703 = phi i64 [ %1006, %1005 ], [ 0, %637 ]
  %704 = load ptr, ptr %150, align 8, !tbaa !27
  %705 = getelementptr inbounds nuw %struct.Piece, ptr %704, i64 %703
  %706 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %707 = load <8 x double>, ptr %164, align 64, !tbaa !25
  %708 = getelementptr inbounds nuw i8, ptr %705, i64 7424
  %709 = load <8 x i64>, ptr %708, align 64, !tbaa !25
  %710 = fdiv <8 x double> %706, %707
  %711 = fdiv <8 x double> splat (double 1.000000e+00), %706
  %712 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %710, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %713 = fadd <8 x double> %710, splat (double 1.000000e+00)
  %714 = fdiv <8 x double> %712, %713
  %715 = fmul <8 x double> %711, %714
  %716 = icmp eq <8 x i64> %709, zeroinitializer
  %717 = select <8 x i1> %716, <8 x double> %715, <8 x double> %711
  %718 = fneg <8 x double> %711
  %719 = fneg <8 x double> %713
  %720 = fmul <8 x double> %711, %719
  %721 = select <8 x i1> %716, <8 x double> %720, <8 x double> %718
  %722 = fmul <8 x double> %710, %710
  %723 = fdiv <8 x double> %722, %713
  %724 = fmul <8 x double> %711, %723
  %725 = select <8 x i1> %716, <8 x double> %724, <8 x double> zeroinitializer
  %726 = getelementptr inbounds nuw i8, ptr %705, i64 5248
  %727 = load <8 x double>, ptr %726, align 64, !tbaa !25
  %728 = select <8 x i1> %640, <8 x double> %727, <8 x double> %717
  store <8 x double> %728, ptr %726, align 64, !tbaa !25
  %729 = getelementptr inbounds nuw i8, ptr %705, i64 5312
  %730 = load <8 x double>, ptr %729, align 64, !tbaa !25
  %731 = select <8 x i1> %640, <8 x double> %730, <8 x double> %721
  store <8 x double> %731, ptr %729, align 64, !tbaa !25
  %732 = getelementptr inbounds nuw i8, ptr %705, i64 5376
  %733 = load <8 x double>, ptr %732, align 64, !tbaa !25
  %734 = select <8 x i1> %640, <8 x double> %733, <8 x double> %725
  store <8 x double> %734, ptr %732, align 64, !tbaa !25
  %735 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %736 = load <8 x double>, ptr %164, align 64, !tbaa !25
  %737 = fdiv <8 x double> %735, %736
  %738 = select <8 x i1> %716, <8 x double> %737, <8 x double> zeroinitializer
  %739 = getelementptr inbounds nuw i8, ptr %705, i64 2944
  %740 = getelementptr inbounds nuw i8, ptr %705, i64 3712
  %741 = getelementptr inbounds nuw i8, ptr %705, i64 4480
  br label %775

742:                                              ; preds = %775
  %743 = load <8 x double>, ptr %739, align 64, !tbaa !25
  %744 = load <8 x double>, ptr %740, align 64, !tbaa !25
  %745 = fcmp olt <8 x double> %743, %744
  %746 = select <8 x i1> %745, <8 x double> %743, <8 x double> %744
  %747 = load <8 x double>, ptr %705, align 64, !tbaa !25
  %748 = fmul <8 x double> %747, splat (double 3.000000e-01)
  %749 = fcmp ogt <8 x double> %746, %748
  %750 = select <8 x i1> %749, <8 x double> %746, <8 x double> %748
  %751 = select <8 x i1> %640, <8 x double> %743, <8 x double> %750
  store <8 x double> %751, ptr %739, align 64, !tbaa !25
  %752 = getelementptr inbounds nuw i8, ptr %705, i64 5632
  %753 = getelementptr inbounds nuw i8, ptr %705, i64 3456
  %754 = load <8 x double>, ptr %753, align 64, !tbaa !25
  %755 = fcmp ogt <8 x double> %754, zeroinitializer
  %756 = select <8 x i1> %755, <8 x double> %754, <8 x double> zeroinitializer
  %757 = load <8 x double>, ptr %752, align 64, !tbaa !25
  %758 = select <8 x i1> %640, <8 x double> %757, <8 x double> %756
  store <8 x double> %758, ptr %752, align 64, !tbaa !25
  %759 = load i64, ptr %140, align 8, !tbaa !20
  %760 = icmp sgt i64 %759, 0
  br i1 %760, label %761, label %788

761:                                              ; preds = %742
  %762 = getelementptr inbounds nuw i8, ptr %705, i64 7568
  %763 = getelementptr inbounds nuw i8, ptr %705, i64 7576
  %764 = getelementptr inbounds nuw i8, ptr %705, i64 7560
  %765 = getelementptr inbounds nuw i8, ptr %705, i64 7656
  %766 = getelementptr inbounds nuw i8, ptr %705, i64 7552
  %767 = getelementptr inbounds nuw i8, ptr %705, i64 4416
  %768 = getelementptr inbounds nuw i8, ptr %705, i64 1536
  %769 = getelementptr inbounds nuw i8, ptr %705, i64 5184
  %770 = getelementptr inbounds nuw i8, ptr %705, i64 384
  %771 = getelementptr inbounds nuw i8, ptr %705, i64 448
  %772 = getelementptr inbounds nuw i8, ptr %705, i64 512
  %773 = getelementptr inbounds nuw i8, ptr %705, i64 640
  %774 = getelementptr inbounds nuw i8, ptr %705, i64 7584
  br label %798

775:                                              ; preds = %702, %775
  %776 = phi i64 [ 0, %702 ], [ %786, %775 ]
  %777 = getelementptr inbounds nuw [12 x <8 x double>], ptr %739, i64 0, i64 %776
  %778 = getelementptr inbounds nuw [12 x <8 x double>], ptr %740, i64 0, i64 %776
  %779 = load <8 x double>, ptr %778, align 64, !tbaa !25
  %780 = getelementptr inbounds nuw [12 x <8 x double>], ptr %741, i64 0, i64 %776
  %781 = load <8 x double>, ptr %780, align 64, !tbaa !25
  %782 = fsub <8 x double> %779, %781
  %783 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %738, <8 x double> %782, <8 x double> %779)
  %784 = load <8 x double>, ptr %777, align 64, !tbaa !25
  %785 = select <8 x i1> %640, <8 x double> %784, <8 x double> %783
  store <8 x double> %785, ptr %777, align 64, !tbaa !25
  %786 = add nuw nsw i64 %776, 1
  %787 = icmp eq i64 %786, 11
  br i1 %787, label %742, label %775, !llvm.loop !56

788:                                              ; preds = %864, %742
  %789 = load i64, ptr %141, align 16, !tbaa !21
  %790 = icmp sgt i64 %789, 0
  br i1 %790, label %791, label %876

791:                                              ; preds = %788
  %792 = getelementptr inbounds nuw i8, ptr %705, i64 7736
  %793 = getelementptr inbounds nuw i8, ptr %705, i64 7688
  %794 = getelementptr inbounds nuw i8, ptr %705, i64 7744
  %795 = getelementptr inbounds nuw i8, ptr %705, i64 7696
  %796 = getelementptr inbounds nuw i8, ptr %705, i64 768
  %797 = getelementptr inbounds nuw i8, ptr %705, i64 7704
  br label %1009

798:                                              ; preds = %761, %864
  %799 = phi i64 [ 0, %761 ], [ %873, %864 ]
  %800 = load ptr, ptr %762, align 16, !tbaa !46
  %801 = getelementptr inbounds nuw <8 x double>, ptr %800, i64 %799
  %802 = load <8 x double>, ptr %801, align 64, !tbaa !25
  %803 = load ptr, ptr %763, align 8, !tbaa !57
  %804 = getelementptr inbounds nuw <8 x double>, ptr %803, i64 %799
  %805 = load <8 x double>, ptr %804, align 64, !tbaa !25
  %806 = fsub <8 x double> %802, %805
  %807 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %738, <8 x double> %806, <8 x double> %802)
  %808 = load ptr, ptr %764, align 8, !tbaa !58
  %809 = getelementptr inbounds nuw <8 x double>, ptr %808, i64 %799
  %810 = load <8 x double>, ptr %809, align 64, !tbaa !25
  %811 = select <8 x i1> %640, <8 x double> %810, <8 x double> %807
  store <8 x double> %811, ptr %809, align 64, !tbaa !25
  %812 = load ptr, ptr %765, align 8, !tbaa !48
  %813 = getelementptr inbounds nuw <8 x double>, ptr %812, i64 %799
  %814 = load <8 x double>, ptr %813, align 64, !tbaa !25
  %815 = load i64, ptr %766, align 64, !tbaa !30
  %816 = icmp slt i64 %799, %815
  br i1 %816, label %817, label %833

817:                                              ; preds = %798
  %818 = load <8 x double>, ptr %768, align 64, !tbaa !25
  %819 = fmul <8 x double> %814, %818
  %820 = load <8 x double>, ptr %729, align 64, !tbaa !25
  %821 = fmul <8 x double> %820, %819
  %822 = load ptr, ptr %762, align 16, !tbaa !46
  %823 = getelementptr inbounds nuw <8 x double>, ptr %822, i64 %799
  %824 = load <8 x double>, ptr %823, align 64, !tbaa !25
  %825 = load <8 x double>, ptr %773, align 64, !tbaa !25
  %826 = fmul <8 x double> %824, %825
  %827 = load <8 x double>, ptr %732, align 64, !tbaa !25
  %828 = fmul <8 x double> %819, %827
  %829 = load ptr, ptr %763, align 8, !tbaa !57
  %830 = getelementptr inbounds nuw <8 x double>, ptr %829, i64 %799
  %831 = load <8 x double>, ptr %830, align 64, !tbaa !25
  %832 = fmul <8 x double> %831, %825
  br label %864

833:                                              ; preds = %798
  %834 = load <8 x double>, ptr %767, align 64, !tbaa !25
  %835 = load <8 x double>, ptr %768, align 64, !tbaa !25
  %836 = fsub <8 x double> %834, %835
  %837 = fmul <8 x double> %814, %836
  %838 = load <8 x double>, ptr %769, align 64, !tbaa !25
  %839 = fsub <8 x double> %838, %835
  %840 = fmul <8 x double> %814, %839
  %841 = load <8 x double>, ptr %729, align 64, !tbaa !25
  %842 = fmul <8 x double> %841, %837
  %843 = load ptr, ptr %762, align 16, !tbaa !46
  %844 = getelementptr inbounds nuw <8 x double>, ptr %843, i64 %799
  %845 = load <8 x double>, ptr %844, align 64, !tbaa !25
  %846 = load <8 x double>, ptr %770, align 64, !tbaa !25
  %847 = load <8 x double>, ptr %771, align 64, !tbaa !25
  %848 = load <8 x double>, ptr %772, align 64, !tbaa !25
  %849 = fmul <8 x double> %845, %848
  %850 = fmul <8 x double> %849, splat (double 0x3FD5555555555555)
  %851 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %847, <8 x double> splat (double 5.000000e-01), <8 x double> %850)
  %852 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %845, <8 x double> %851, <8 x double> %846)
  %853 = fmul <8 x double> %845, %852
  %854 = load <8 x double>, ptr %732, align 64, !tbaa !25
  %855 = fmul <8 x double> %840, %854
  %856 = load ptr, ptr %763, align 8, !tbaa !57
  %857 = getelementptr inbounds nuw <8 x double>, ptr %856, i64 %799
  %858 = load <8 x double>, ptr %857, align 64, !tbaa !25
  %859 = fmul <8 x double> %858, %848
  %860 = fmul <8 x double> %859, splat (double 0x3FD5555555555555)
  %861 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %847, <8 x double> splat (double 5.000000e-01), <8 x double> %860)
  %862 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %858, <8 x double> %861, <8 x double> %846)
  %863 = fmul <8 x double> %858, %862
  br label %864

864:                                              ; preds = %817, %833
  %865 = phi <8 x double> [ %828, %817 ], [ %855, %833 ]
  %866 = phi <8 x double> [ %826, %817 ], [ %853, %833 ]
  %867 = phi <8 x double> [ %821, %817 ], [ %842, %833 ]
  %868 = phi <8 x double> [ %832, %817 ], [ %863, %833 ]
  %869 = fmul <8 x double> %865, %868
  %870 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %867, <8 x double> %866, <8 x double> %869)
  %871 = load ptr, ptr %774, align 32, !tbaa !59
  %872 = getelementptr inbounds nuw <8 x double>, ptr %871, i64 %799
  store <8 x double> %870, ptr %872, align 64, !tbaa !25
  %873 = add nuw nsw i64 %799, 1
  %874 = load i64, ptr %140, align 8, !tbaa !20
  %875 = icmp slt i64 %873, %874
  br i1 %875, label %798, label %788, !llvm.loop !60

876:                                              ; preds = %1009, %788
  %877 = getelementptr inbounds nuw i8, ptr %705, i64 1664
  %878 = load <8 x double>, ptr %877, align 64, !tbaa !25
  %879 = fcmp ogt <8 x double> %878, zeroinitializer
  %880 = bitcast <8 x i1> %879 to i8
  %881 = icmp eq i8 %880, 0
  br i1 %881, label %882, label %886

882:                                              ; preds = %876
  %883 = getelementptr inbounds nuw i8, ptr %705, i64 7168
  %884 = load <8 x double>, ptr %883, align 64, !tbaa !25
  %885 = select <8 x i1> %640, <8 x double> %884, <8 x double> zeroinitializer
  store <8 x double> %885, ptr %883, align 64, !tbaa !25
  br label %1005

886:                                              ; preds = %876
  %887 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %888 = fneg <8 x double> %887
  %889 = getelementptr inbounds nuw i8, ptr %705, i64 1728
  %890 = load <8 x double>, ptr %889, align 64, !tbaa !25
  %891 = fdiv <8 x double> %888, %890
  %892 = fcmp ogt <8 x double> %891, splat (double -7.000000e+02)
  %893 = select <8 x i1> %892, <8 x double> %891, <8 x double> splat (double -7.000000e+02)
  %894 = fcmp olt <8 x double> %893, splat (double 7.000000e+02)
  %895 = select <8 x i1> %894, <8 x double> %893, <8 x double> splat (double 7.000000e+02)
  %896 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %895, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %897 = fadd <8 x double> %896, splat (double 0xC338000000000000)
  %898 = fneg <8 x double> %897
  %899 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %898, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %895)
  %900 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %898, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %899)
  %901 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %900, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %902 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %901, <8 x double> %900, <8 x double> splat (double 0x3E5AE64567F544E4))
  %903 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %902, <8 x double> %900, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %904 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %903, <8 x double> %900, <8 x double> splat (double 0x3EC71DE3A556C734))
  %905 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %904, <8 x double> %900, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %906 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %905, <8 x double> %900, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %907 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %906, <8 x double> %900, <8 x double> splat (double 0x3F56C16C16C16C17))
  %908 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %907, <8 x double> %900, <8 x double> splat (double 0x3F81111111111111))
  %909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %908, <8 x double> %900, <8 x double> splat (double 0x3FA5555555555555))
  %910 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %909, <8 x double> %900, <8 x double> splat (double 0x3FC5555555555555))
  %911 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %910, <8 x double> %900, <8 x double> splat (double 5.000000e-01))
  %912 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %911, <8 x double> %900, <8 x double> splat (double 1.000000e+00))
  %913 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %912, <8 x double> %900, <8 x double> splat (double 1.000000e+00))
  %914 = bitcast <8 x double> %896 to <8 x i64>
  %915 = shl <8 x i64> %914, splat (i64 52)
  %916 = bitcast <8 x double> %913 to <8 x i64>
  %917 = add <8 x i64> %915, %916
  %918 = bitcast <8 x i64> %917 to <8 x double>
  %919 = fsub <8 x double> splat (double 1.000000e+00), %918
  %920 = getelementptr inbounds nuw i8, ptr %705, i64 4416
  %921 = load <8 x double>, ptr %920, align 64, !tbaa !25
  %922 = getelementptr inbounds nuw i8, ptr %705, i64 7552
  %923 = load i64, ptr %922, align 64, !tbaa !30
  %924 = load i64, ptr %140, align 8, !tbaa !20
  %925 = icmp slt i64 %923, %924
  br i1 %925, label %926, label %935

926:                                              ; preds = %886
  %927 = getelementptr inbounds nuw i8, ptr %705, i64 7568
  %928 = getelementptr inbounds nuw i8, ptr %705, i64 7560
  %929 = getelementptr inbounds nuw i8, ptr %705, i64 1792
  %930 = getelementptr inbounds nuw i8, ptr %705, i64 1856
  %931 = getelementptr inbounds nuw i8, ptr %705, i64 7600
  %932 = getelementptr inbounds nuw i8, ptr %705, i64 7592
  %933 = getelementptr inbounds nuw i8, ptr %705, i64 7656
  %934 = getelementptr inbounds nuw i8, ptr %705, i64 1536
  br label %948

935:                                              ; preds = %948, %886
  %936 = phi <8 x double> [ zeroinitializer, %886 ], [ %986, %948 ]
  %937 = phi <8 x double> [ zeroinitializer, %886 ], [ %1001, %948 ]
  %938 = getelementptr inbounds nuw i8, ptr %705, i64 3776
  %939 = load <8 x double>, ptr %938, align 64, !tbaa !25
  %940 = fsub <8 x double> %939, %921
  %941 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %936, <8 x double> %940, <8 x double> %937)
  %942 = getelementptr inbounds nuw i8, ptr %705, i64 7168
  %943 = getelementptr inbounds nuw i8, ptr %705, i64 832
  %944 = load <8 x double>, ptr %943, align 64, !tbaa !25
  %945 = fmul <8 x double> %944, %941
  %946 = load <8 x double>, ptr %942, align 64, !tbaa !25
  %947 = select <8 x i1> %640, <8 x double> %946, <8 x double> %945
  store <8 x double> %947, ptr %942, align 64, !tbaa !25
  br label %1005

948:                                              ; preds = %926, %948
  %949 = phi <8 x double> [ zeroinitializer, %926 ], [ %1001, %948 ]
  %950 = phi i64 [ %923, %926 ], [ %1002, %948 ]
  %951 = load ptr, ptr %927, align 16, !tbaa !46
  %952 = getelementptr inbounds <8 x double>, ptr %951, i64 %950
  %953 = load <8 x double>, ptr %952, align 64, !tbaa !25
  %954 = load ptr, ptr %928, align 8, !tbaa !58
  %955 = getelementptr inbounds <8 x double>, ptr %954, i64 %950
  %956 = load <8 x double>, ptr %955, align 64, !tbaa !25
  %957 = fadd <8 x double> %953, %956
  %958 = load <8 x double>, ptr %929, align 64, !tbaa !25
  %959 = fneg <8 x double> %958
  %960 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %957, <8 x double> splat (double 5.000000e-01), <8 x double> %959)
  %961 = load <8 x double>, ptr %930, align 64, !tbaa !25
  %962 = fmul <8 x double> %960, %961
  %963 = fcmp ogt <8 x double> %962, splat (double -5.000000e+00)
  %964 = select <8 x i1> %963, <8 x double> %962, <8 x double> splat (double -5.000000e+00)
  %965 = fcmp olt <8 x double> %964, splat (double 5.000000e+00)
  %966 = select <8 x i1> %965, <8 x double> %964, <8 x double> splat (double 5.000000e+00)
  %967 = fmul <8 x double> %966, %966
  %968 = fadd <8 x double> %967, splat (double 3.780000e+02)
  %969 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %968, <8 x double> splat (double 1.732500e+04))
  %970 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %969, <8 x double> splat (double 1.351350e+05))
  %971 = fmul <8 x double> %966, %970
  %972 = load <8 x double>, ptr %877, align 64, !tbaa !25
  %973 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %974 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %973, <8 x double> splat (double 6.237000e+04))
  %975 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %967, <8 x double> %974, <8 x double> splat (double 1.351350e+05))
  %976 = fdiv <8 x double> %971, %975
  %977 = fadd <8 x double> %976, splat (double 1.000000e+00)
  %978 = fmul <8 x double> %972, %977
  %979 = load ptr, ptr %931, align 16, !tbaa !47
  %980 = getelementptr inbounds <8 x double>, ptr %979, i64 %950
  %981 = load <8 x double>, ptr %980, align 64, !tbaa !25
  %982 = fadd <8 x double> %981, splat (double -1.000000e+00)
  %983 = fadd <8 x double> %982, %978
  %984 = fcmp ogt <8 x double> %983, zeroinitializer
  %985 = select <8 x i1> %984, <8 x double> %983, <8 x double> zeroinitializer
  %986 = fmul <8 x double> %919, %985
  %987 = load ptr, ptr %932, align 8, !tbaa !61
  %988 = getelementptr inbounds <8 x double>, ptr %987, i64 %950
  %989 = fsub <8 x double> %981, %986
  %990 = load <8 x double>, ptr %988, align 64, !tbaa !25
  %991 = select <8 x i1> %640, <8 x double> %990, <8 x double> %989
  store <8 x double> %991, ptr %988, align 64, !tbaa !25
  %992 = load ptr, ptr %933, align 8, !tbaa !48
  %993 = getelementptr inbounds <8 x double>, ptr %992, i64 %950
  %994 = load <8 x double>, ptr %993, align 64, !tbaa !25
  %995 = load i64, ptr %922, align 64, !tbaa !30
  %996 = icmp slt i64 %950, %995
  %997 = load <8 x double>, ptr %934, align 64, !tbaa !25
  %998 = fsub <8 x double> %921, %997
  %999 = select i1 %996, <8 x double> %997, <8 x double> %998
  %1000 = fmul <8 x double> %994, %999
  %1001 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %986, <8 x double> %1000, <8 x double> %949)
  %1002 = add nsw i64 %950, 1
  %1003 = load i64, ptr %140, align 8, !tbaa !20
  %1004 = icmp slt i64 %1002, %1003
  br i1 %1004, label %948, label %935, !llvm.loop !62

1005:                                             ; preds = %882, %935
  %1006 = add nuw nsw i64 %703, 1
  %1007 = load i64, ptr %149, align 64, !tbaa !16
  %1008 = icmp slt i64 %1006, %1007
  br i1 %1008, label %702, label %1042, !llvm.loop !63

1009:                                             ; preds = %791, %1009
  %1010 = phi i64 [ 0, %791 ], [ %1012, %1009 ]
  %1011 = load ptr, ptr %792, align 8, !tbaa !49
  %1012 = add nuw nsw i64 %1010, 1
  %1013 = getelementptr inbounds nuw <8 x double>, ptr %1011, i64 %1012
  %1014 = load <8 x double>, ptr %1013, align 64, !tbaa !25
  %1015 = getelementptr inbounds nuw <8 x double>, ptr %1011, i64 %1010
  %1016 = load <8 x double>, ptr %1015, align 64, !tbaa !25
  %1017 = fsub <8 x double> %1014, %1016
  %1018 = load ptr, ptr %793, align 8, !tbaa !50
  %1019 = getelementptr inbounds nuw <8 x double>, ptr %1018, i64 %1010
  %1020 = load <8 x double>, ptr %1019, align 64, !tbaa !25
  %1021 = fmul <8 x double> %1017, %1020
  %1022 = load ptr, ptr %794, align 64, !tbaa !64
  %1023 = getelementptr inbounds nuw <8 x double>, ptr %1022, i64 %1012
  %1024 = load <8 x double>, ptr %1023, align 64, !tbaa !25
  %1025 = getelementptr inbounds nuw <8 x double>, ptr %1022, i64 %1010
  %1026 = load <8 x double>, ptr %1025, align 64, !tbaa !25
  %1027 = fsub <8 x double> %1024, %1026
  %1028 = load ptr, ptr %795, align 16, !tbaa !65
  %1029 = getelementptr inbounds nuw <8 x double>, ptr %1028, i64 %1010
  %1030 = load <8 x double>, ptr %1029, align 64, !tbaa !25
  %1031 = fmul <8 x double> %1027, %1030
  %1032 = load <8 x double>, ptr %796, align 64, !tbaa !25
  %1033 = load <8 x double>, ptr %729, align 64, !tbaa !25
  %1034 = load <8 x double>, ptr %732, align 64, !tbaa !25
  %1035 = fmul <8 x double> %1031, %1034
  %1036 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1033, <8 x double> %1021, <8 x double> %1035)
  %1037 = fmul <8 x double> %1032, %1036
  %1038 = load ptr, ptr %797, align 8, !tbaa !66
  %1039 = getelementptr inbounds nuw <8 x double>, ptr %1038, i64 %1010
  store <8 x double> %1037, ptr %1039, align 64, !tbaa !25
  %1040 = load i64, ptr %141, align 16, !tbaa !21
  %1041 = icmp slt i64 %1012, %1040
  br i1 %1041, label %1009, label %876, !llvm.loop !67

1042:                                             ; preds = %1005, %637
  %1043 = phi i64 [ %557, %637 ], [ %1007, %1005 ]
  %1044 = load <8 x double>, ptr %173, align 64, !tbaa !25
  %1045 = fcmp ogt <8 x double> %1044, zeroinitializer
  %1046 = select <8 x i1> %1045, <8 x i64> %554, <8 x i64> zeroinitializer
  %1047 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1046)
  %1048 = icmp eq i64 %1047, 0
  br i1 %1048, label %1132, label %1049

1049:                                             ; preds = %1042
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1046, ptr %7, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1050 = load <8 x double>, ptr %159, align 64, !tbaa !25
  %1051 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %1052 = fadd <8 x double> %1050, %1051
  store <8 x double> %1052, ptr %9, align 64, !tbaa !25
  %1053 = load ptr, ptr %174, align 8
  %1054 = load ptr, ptr %176, align 8
  %1055 = load ptr, ptr %177, align 8
  br label %1056

1056:                                             ; preds = %1124, %1049
  %1057 = phi i64 [ 0, %1049 ], [ %1125, %1124 ]
  %1058 = getelementptr inbounds nuw i64, ptr %7, i64 %1057
  %1059 = load i64, ptr %1058, align 8, !tbaa !29
  %1060 = icmp eq i64 %1059, 0
  br i1 %1060, label %1124, label %1061

1061:                                             ; preds = %1056
  %1062 = getelementptr inbounds nuw [8 x i64], ptr %142, i64 0, i64 %1057
  %1063 = load i64, ptr %1062, align 8, !tbaa !29
  %1064 = shl nsw i64 %1063, 1
  %1065 = getelementptr inbounds i64, ptr %1053, i64 %1064
  %1066 = load i64, ptr %1065, align 8, !tbaa !29
  %1067 = shl nuw nsw i64 %1057, 1
  %1068 = getelementptr inbounds nuw [16 x i64], ptr %175, i64 0, i64 %1067
  %1069 = getelementptr inbounds i64, ptr %1055, i64 %1064
  %1070 = load i64, ptr %1069, align 8, !tbaa !29
  %1071 = shl nsw i64 %1070, 4
  %1072 = getelementptr inbounds i8, ptr %1054, i64 %1071
  %1073 = getelementptr inbounds nuw double, ptr %9, i64 %1057
  %1074 = load double, ptr %1073, align 8, !tbaa !42
  %1075 = load i64, ptr %1068, align 8, !tbaa !29
  %1076 = getelementptr i8, ptr %1072, i64 -16
  %1077 = icmp sgt i64 %1075, 0
  br i1 %1077, label %1078, label %1087

1078:                                             ; preds = %1061, %1084
  %1079 = phi i64 [ %1085, %1084 ], [ %1075, %1061 ]
  %1080 = shl i64 %1079, 4
  %1081 = getelementptr i8, ptr %1076, i64 %1080
  %1082 = load double, ptr %1081, align 8, !tbaa !42
  %1083 = fcmp ugt double %1074, %1082
  br i1 %1083, label %1087, label %1084

1084:                                             ; preds = %1078
  %1085 = add nsw i64 %1079, -1
  store i64 %1085, ptr %1068, align 8, !tbaa !29
  %1086 = icmp sgt i64 %1079, 1
  br i1 %1086, label %1078, label %1087, !llvm.loop !68

1087:                                             ; preds = %1084, %1078, %1061
  %1088 = phi i64 [ %1075, %1061 ], [ 0, %1084 ], [ %1079, %1078 ]
  %1089 = icmp slt i64 %1088, %1066
  br i1 %1089, label %1090, label %1099

1090:                                             ; preds = %1087, %1096
  %1091 = phi i64 [ %1097, %1096 ], [ %1088, %1087 ]
  %1092 = shl nsw i64 %1091, 4
  %1093 = getelementptr inbounds i8, ptr %1072, i64 %1092
  %1094 = load double, ptr %1093, align 8, !tbaa !42
  %1095 = fcmp ule double %1074, %1094
  br i1 %1095, label %1104, label %1096

1096:                                             ; preds = %1090
  %1097 = add i64 %1091, 1
  store i64 %1097, ptr %1068, align 8, !tbaa !29
  %1098 = icmp eq i64 %1097, %1066
  br i1 %1098, label %1099, label %1090, !llvm.loop !69

1099:                                             ; preds = %1096, %1087
  %1100 = shl i64 %1066, 4
  %1101 = getelementptr i8, ptr %1072, i64 %1100
  %1102 = getelementptr i8, ptr %1101, i64 -8
  %1103 = load double, ptr %1102, align 8, !tbaa !42
  br label %1121

1104:                                             ; preds = %1090
  %1105 = shl nsw i64 %1091, 1
  %1106 = or disjoint i64 %1105, 1
  %1107 = getelementptr inbounds double, ptr %1072, i64 %1106
  %1108 = load double, ptr %1107, align 8, !tbaa !42
  %1109 = icmp sgt i64 %1091, 0
  br i1 %1109, label %1110, label %1121

1110:                                             ; preds = %1104
  %1111 = getelementptr inbounds nuw i8, ptr %1072, i64 %1092
  %1112 = getelementptr i8, ptr %1111, i64 -8
  %1113 = load double, ptr %1112, align 8, !tbaa !42
  %1114 = getelementptr i8, ptr %1111, i64 -16
  %1115 = load double, ptr %1114, align 8, !tbaa !42
  %1116 = fsub double %1074, %1115
  %1117 = fsub double %1094, %1115
  %1118 = fdiv double %1116, %1117
  %1119 = fsub double %1108, %1113
  %1120 = tail call double @llvm.fmuladd.f64(double %1118, double %1119, double %1113)
  br label %1121

1121:                                             ; preds = %1110, %1104, %1099
  %1122 = phi double [ %1120, %1110 ], [ %1108, %1104 ], [ %1103, %1099 ]
  %1123 = getelementptr inbounds nuw double, ptr %8, i64 %1057
  store double %1122, ptr %1123, align 8, !tbaa !42
  br label %1124

1124:                                             ; preds = %1121, %1056
  %1125 = add nuw nsw i64 %1057, 1
  %1126 = icmp eq i64 %1125, 8
  br i1 %1126, label %1127, label %1056, !llvm.loop !70

1127:                                             ; preds = %1124
  %1128 = load <8 x double>, ptr %8, align 64, !tbaa !25
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1129 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %1130 = icmp eq <8 x i64> %1046, zeroinitializer
  %1131 = select <8 x i1> %1130, <8 x double> %1129, <8 x double> %1128
  store <8 x double> %1131, ptr %170, align 64, !tbaa !25
  br label %1132

1132:                                             ; preds = %1042, %1127, %552
  %1133 = phi i64 [ %1043, %1042 ], [ %1043, %1127 ], [ %557, %552 ]
  %1134 = load <8 x double>, ptr %178, align 64, !tbaa !25
  %1135 = icmp eq <8 x i64> %554, zeroinitializer
  %1136 = select <8 x i1> %1135, <8 x double> %1134, <8 x double> zeroinitializer
  store <8 x double> %1136, ptr %178, align 64, !tbaa !25
  %1137 = icmp sgt i64 %1133, 0
  br i1 %1137, label %1143, label %1138

1138:                                             ; preds = %1132
  %1139 = load <8 x double>, ptr %182, align 64, !tbaa !25
  br label %1779

1140:                                             ; preds = %1773
  %1141 = load <8 x double>, ptr %182, align 64, !tbaa !25
  %1142 = icmp sgt i64 %1777, 0
  br i1 %1142, label %1785, label %1779

1143:                                             ; preds = %1132, %1773
  %1144 = phi i64 [ %1776, %1773 ], [ 0, %1132 ]
  %1145 = load ptr, ptr %150, align 8, !tbaa !27
  %1146 = getelementptr inbounds nuw %struct.Piece, ptr %1145, i64 %1144
  %1147 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %1148 = getelementptr inbounds nuw i8, ptr %1146, i64 6400
  %1149 = load <8 x double>, ptr %1148, align 64, !tbaa !25
  %1150 = fsub <8 x double> %1147, %1149
  %1151 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1150)
  %1152 = getelementptr inbounds nuw i8, ptr %1146, i64 2176
  %1153 = load <8 x double>, ptr %1152, align 64, !tbaa !25
  %1154 = fcmp ogt <8 x double> %1153, splat (double 1.000000e-09)
  %1155 = select <8 x i1> %1154, <8 x double> %1153, <8 x double> splat (double 1.000000e-09)
  %1156 = fdiv <8 x double> %1151, %1155
  %1157 = getelementptr inbounds nuw i8, ptr %1146, i64 1024
  %1158 = load <8 x double>, ptr %1157, align 64, !tbaa !25
  %1159 = fcmp ule <8 x double> %1153, zeroinitializer
  %1160 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1156)
  %1161 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1160)
  %1162 = select <8 x i1> %1159, <8 x double> splat (double 1.000000e+00), <8 x double> %1161
  %1163 = fmul <8 x double> %1158, %1162
  %1164 = getelementptr inbounds nuw i8, ptr %1146, i64 1088
  %1165 = load <8 x double>, ptr %1164, align 64, !tbaa !25
  %1166 = getelementptr inbounds nuw i8, ptr %1146, i64 5632
  %1167 = load <8 x double>, ptr %1166, align 64, !tbaa !25
  %1168 = getelementptr inbounds nuw i8, ptr %1146, i64 5696
  %1169 = load <8 x double>, ptr %1168, align 64, !tbaa !25
  %1170 = fadd <8 x double> %1167, %1169
  %1171 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1165, <8 x double> %1170, <8 x double> %1163)
  %1172 = getelementptr inbounds nuw i8, ptr %1146, i64 1152
  %1173 = load <8 x double>, ptr %1172, align 64, !tbaa !25
  %1174 = fcmp olt <8 x double> %1171, %1173
  %1175 = select <8 x i1> %1174, <8 x double> %1171, <8 x double> %1173
  %1176 = getelementptr inbounds nuw i8, ptr %1146, i64 5312
  %1177 = load <8 x double>, ptr %1176, align 64, !tbaa !25
  %1178 = getelementptr inbounds nuw i8, ptr %1146, i64 3968
  %1179 = load <8 x double>, ptr %1178, align 64, !tbaa !25
  %1180 = getelementptr inbounds nuw i8, ptr %1146, i64 5376
  %1181 = load <8 x double>, ptr %1180, align 64, !tbaa !25
  %1182 = getelementptr inbounds nuw i8, ptr %1146, i64 4736
  %1183 = load <8 x double>, ptr %1182, align 64, !tbaa !25
  %1184 = fmul <8 x double> %1181, %1183
  %1185 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1177, <8 x double> %1179, <8 x double> %1184)
  %1186 = getelementptr inbounds nuw i8, ptr %1146, i64 1216
  %1187 = load <8 x double>, ptr %1186, align 64, !tbaa !25
  %1188 = fneg <8 x double> %1187
  %1189 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1188, <8 x double> %1185, <8 x double> %1175)
  %1190 = getelementptr inbounds nuw i8, ptr %1146, i64 5248
  %1191 = load <8 x double>, ptr %1190, align 64, !tbaa !25
  %1192 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1187, <8 x double> %1191, <8 x double> splat (double 1.000000e+00))
  %1193 = fdiv <8 x double> %1189, %1192
  %1194 = getelementptr inbounds nuw i8, ptr %1146, i64 7488
  %1195 = load <8 x i64>, ptr %1194, align 64, !tbaa !25
  %1196 = load <8 x double>, ptr %179, align 64, !tbaa !25
  %1197 = icmp eq <8 x i64> %1195, zeroinitializer
  %1198 = select <8 x i1> %1197, <8 x double> %1147, <8 x double> %1196
  %1199 = getelementptr inbounds nuw i8, ptr %1146, i64 5504
  store <8 x double> %1198, ptr %1199, align 64, !tbaa !25
  %1200 = load <8 x double>, ptr %180, align 64, !tbaa !25
  %1201 = select <8 x i1> %1197, <8 x double> %1193, <8 x double> %1200
  %1202 = getelementptr inbounds nuw i8, ptr %1146, i64 3200
  store <8 x double> %1201, ptr %1202, align 64, !tbaa !25
  %1203 = getelementptr inbounds nuw i8, ptr %1146, i64 896
  %1204 = load <8 x double>, ptr %1203, align 64, !tbaa !25
  %1205 = fcmp ule <8 x double> %1204, zeroinitializer
  %1206 = getelementptr inbounds nuw i8, ptr %1146, i64 2944
  %1207 = getelementptr inbounds nuw i8, ptr %1146, i64 3072
  %1208 = load <8 x double>, ptr %1207, align 64, !tbaa !25
  %1209 = fcmp ogt <8 x double> %1204, splat (double 1.000000e-30)
  %1210 = select <8 x i1> %1209, <8 x double> %1204, <8 x double> splat (double 1.000000e-30)
  %1211 = fdiv <8 x double> %1208, %1210
  %1212 = fcmp ogt <8 x double> %1211, zeroinitializer
  %1213 = select <8 x i1> %1212, <8 x double> %1211, <8 x double> zeroinitializer
  %1214 = fcmp olt <8 x double> %1213, splat (double 1.000000e+00)
  %1215 = select <8 x i1> %1214, <8 x double> %1213, <8 x double> splat (double 1.000000e+00)
  %1216 = select <8 x i1> %1205, <8 x double> zeroinitializer, <8 x double> %1215
  %1217 = getelementptr inbounds nuw i8, ptr %1146, i64 2112
  %1218 = load <8 x double>, ptr %1217, align 64, !tbaa !25
  %1219 = fmul <8 x double> %1216, splat (double 4.180000e+03)
  %1220 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1219, <8 x double> %1204, <8 x double> %1218)
  %1221 = getelementptr inbounds nuw i8, ptr %1146, i64 4288
  %1222 = load <8 x double>, ptr %1221, align 64, !tbaa !25
  %1223 = getelementptr inbounds nuw i8, ptr %1146, i64 5056
  %1224 = load <8 x double>, ptr %1223, align 64, !tbaa !25
  %1225 = fmul <8 x double> %1181, %1224
  %1226 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1177, <8 x double> %1222, <8 x double> %1225)
  %1227 = getelementptr inbounds nuw i8, ptr %1146, i64 7360
  %1228 = load <8 x i64>, ptr %1227, align 64, !tbaa !25
  %1229 = fcmp ule <8 x double> %1218, zeroinitializer
  %1230 = getelementptr inbounds nuw i8, ptr %1146, i64 6912
  store <8 x double> %1216, ptr %1230, align 64, !tbaa !25
  %1231 = fmul <8 x double> %1191, %1220
  %1232 = icmp eq <8 x i64> %1228, splat (i64 -1)
  %1233 = select <8 x i1> %1229, <8 x i1> splat (i1 true), <8 x i1> %1232
  %1234 = select <8 x i1> %1233, <8 x double> zeroinitializer, <8 x double> %1231
  %1235 = getelementptr inbounds nuw i8, ptr %1146, i64 6976
  store <8 x double> %1234, ptr %1235, align 64, !tbaa !25
  %1236 = fmul <8 x double> %1226, %1220
  %1237 = select <8 x i1> %1233, <8 x double> zeroinitializer, <8 x double> %1236
  %1238 = getelementptr inbounds nuw i8, ptr %1146, i64 7040
  store <8 x double> %1237, ptr %1238, align 64, !tbaa !25
  %1239 = load <8 x double>, ptr %1146, align 64, !tbaa !25
  %1240 = load <8 x double>, ptr %1206, align 64, !tbaa !25
  %1241 = fsub <8 x double> %1239, %1240
  %1242 = fsub <8 x double> splat (double 1.000000e+00), %1216
  %1243 = getelementptr inbounds nuw i8, ptr %1146, i64 1920
  %1244 = load <8 x double>, ptr %1243, align 64, !tbaa !25
  %1245 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1242, <8 x double> %1244, <8 x double> %1241)
  %1246 = load <8 x double>, ptr %181, align 64, !tbaa !25
  %1247 = fdiv <8 x double> splat (double 1.000000e+00), %1246
  %1248 = getelementptr inbounds nuw i8, ptr %1146, i64 2240
  %1249 = load <8 x double>, ptr %1248, align 64, !tbaa !25
  %1250 = fcmp ogt <8 x double> %1249, splat (double 1.000000e-30)
  %1251 = select <8 x i1> %1250, <8 x double> %1249, <8 x double> splat (double 1.000000e-30)
  %1252 = fdiv <8 x double> %1245, %1251
  %1253 = fadd <8 x double> %1247, %1252
  %1254 = getelementptr inbounds nuw i8, ptr %1146, i64 7104
  store <8 x double> %1253, ptr %1254, align 64, !tbaa !25
  %1255 = getelementptr inbounds nuw i8, ptr %1146, i64 6784
  store <8 x double> %1167, ptr %1255, align 64, !tbaa !25
  %1256 = getelementptr inbounds nuw i8, ptr %1146, i64 2560
  %1257 = load <8 x double>, ptr %1256, align 64, !tbaa !25
  %1258 = getelementptr inbounds nuw i8, ptr %1146, i64 2624
  %1259 = load <8 x double>, ptr %1258, align 64, !tbaa !25
  %1260 = getelementptr inbounds nuw i8, ptr %1146, i64 2688
  %1261 = load <8 x double>, ptr %1260, align 64, !tbaa !25
  %1262 = getelementptr inbounds nuw i8, ptr %1146, i64 2752
  %1263 = load <8 x double>, ptr %1262, align 64, !tbaa !25
  %1264 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1263, <8 x double> %1261)
  %1265 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1264, <8 x double> %1259)
  %1266 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1265, <8 x double> %1257)
  %1267 = getelementptr inbounds nuw i8, ptr %1146, i64 3648
  store <8 x double> %1266, ptr %1267, align 64, !tbaa !25
  %1268 = getelementptr inbounds nuw i8, ptr %1146, i64 4416
  %1269 = load <8 x double>, ptr %1268, align 64, !tbaa !25
  %1270 = fmul <8 x double> %1177, %1269
  %1271 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1191, <8 x double> %1266, <8 x double> %1270)
  %1272 = getelementptr inbounds nuw i8, ptr %1146, i64 5184
  %1273 = load <8 x double>, ptr %1272, align 64, !tbaa !25
  %1274 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1181, <8 x double> %1273, <8 x double> %1271)
  %1275 = fmul <8 x double> %1274, splat (double 5.000000e-01)
  %1276 = getelementptr inbounds nuw i8, ptr %1146, i64 6720
  store <8 x double> %1275, ptr %1276, align 64, !tbaa !25
  %1277 = getelementptr inbounds nuw i8, ptr %1146, i64 2304
  %1278 = load <8 x double>, ptr %1277, align 64, !tbaa !25
  %1279 = getelementptr inbounds nuw i8, ptr %1146, i64 2368
  %1280 = load <8 x double>, ptr %1279, align 64, !tbaa !25
  %1281 = getelementptr inbounds nuw i8, ptr %1146, i64 2432
  %1282 = load <8 x double>, ptr %1281, align 64, !tbaa !25
  %1283 = getelementptr inbounds nuw i8, ptr %1146, i64 2496
  %1284 = load <8 x double>, ptr %1283, align 64, !tbaa !25
  %1285 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1284, <8 x double> %1282)
  %1286 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1285, <8 x double> %1280)
  %1287 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1286, <8 x double> %1278)
  %1288 = getelementptr inbounds nuw i8, ptr %1146, i64 6656
  store <8 x double> %1287, ptr %1288, align 64, !tbaa !25
  %1289 = getelementptr inbounds nuw i8, ptr %1146, i64 7552
  %1290 = load i64, ptr %1289, align 64, !tbaa !30
  %1291 = icmp eq i64 %1290, 0
  br i1 %1291, label %1292, label %1304

1292:                                             ; preds = %1143
  %1293 = fdiv <8 x double> %1287, %1240
  %1294 = load i64, ptr %140, align 8, !tbaa !20
  %1295 = getelementptr inbounds nuw i8, ptr %1146, i64 7672
  %1296 = load ptr, ptr %1295, align 8, !tbaa !34
  %1297 = getelementptr inbounds <8 x double>, ptr %1296, i64 %1294
  %1298 = load <8 x double>, ptr %1297, align 64, !tbaa !25
  %1299 = fmul <8 x double> %1293, %1298
  %1300 = getelementptr inbounds nuw i8, ptr %1146, i64 64
  %1301 = load <8 x double>, ptr %1300, align 64, !tbaa !25
  %1302 = fsub <8 x double> %1240, %1301
  %1303 = fdiv <8 x double> splat (double 1.000000e+00), %1302
  br label %1327

1304:                                             ; preds = %1143
  %1305 = getelementptr inbounds nuw i8, ptr %1146, i64 64
  %1306 = load <8 x double>, ptr %1305, align 64, !tbaa !25
  %1307 = fsub <8 x double> %1240, %1306
  %1308 = fdiv <8 x double> splat (double 1.000000e+00), %1307
  %1309 = load i64, ptr %140, align 8, !tbaa !20
  %1310 = getelementptr inbounds nuw i8, ptr %1146, i64 7672
  %1311 = load ptr, ptr %1310, align 8, !tbaa !34
  %1312 = shl nsw i64 %1309, 8
  %1313 = getelementptr inbounds i8, ptr %1311, i64 %1312
  %1314 = load <8 x double>, ptr %1313, align 64, !tbaa !25
  %1315 = getelementptr inbounds nuw i8, ptr %1313, i64 64
  %1316 = load <8 x double>, ptr %1315, align 64, !tbaa !25
  %1317 = getelementptr inbounds nuw i8, ptr %1313, i64 128
  %1318 = load <8 x double>, ptr %1317, align 64, !tbaa !25
  %1319 = getelementptr inbounds nuw i8, ptr %1313, i64 192
  %1320 = load <8 x double>, ptr %1319, align 64, !tbaa !25
  %1321 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1320, <8 x double> %1318)
  %1322 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1321, <8 x double> %1316)
  %1323 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1322, <8 x double> %1314)
  %1324 = icmp sgt i64 %1309, %1290
  %1325 = fmul <8 x double> %1308, %1323
  %1326 = select i1 %1324, <8 x double> %1325, <8 x double> %1323
  br label %1327

1327:                                             ; preds = %1292, %1304
  %1328 = phi <8 x double> [ %1303, %1292 ], [ %1308, %1304 ]
  %1329 = phi <8 x double> [ %1299, %1292 ], [ %1326, %1304 ]
  %1330 = getelementptr inbounds nuw i8, ptr %1146, i64 5568
  %1331 = load <8 x double>, ptr %1330, align 64, !tbaa !25
  %1332 = fcmp ogt <8 x double> %1241, splat (double 0x3D719799812DEA11)
  %1333 = select <8 x i1> %1332, <8 x double> %1241, <8 x double> splat (double 0x3D719799812DEA11)
  %1334 = getelementptr inbounds nuw i8, ptr %1146, i64 64
  %1335 = getelementptr inbounds nuw i8, ptr %1146, i64 6528
  store <8 x double> %1328, ptr %1335, align 64, !tbaa !25
  %1336 = getelementptr inbounds nuw i8, ptr %1146, i64 704
  %1337 = load <8 x double>, ptr %1336, align 64, !tbaa !25
  %1338 = fdiv <8 x double> %1337, %1333
  %1339 = getelementptr inbounds nuw i8, ptr %1146, i64 6592
  store <8 x double> %1338, ptr %1339, align 64, !tbaa !25
  %1340 = getelementptr inbounds nuw i8, ptr %1146, i64 7560
  %1341 = load ptr, ptr %1340, align 8, !tbaa !58
  %1342 = load i64, ptr %140, align 8, !tbaa !20
  %1343 = getelementptr <8 x double>, ptr %1341, i64 %1342
  %1344 = getelementptr i8, ptr %1343, i64 -64
  %1345 = load <8 x double>, ptr %1344, align 64, !tbaa !25
  %1346 = fadd <8 x double> %1331, %1345
  %1347 = fmul <8 x double> %1346, splat (double 5.000000e-01)
  %1348 = getelementptr inbounds nuw i8, ptr %1146, i64 192
  %1349 = load <8 x double>, ptr %1348, align 64, !tbaa !25
  %1350 = getelementptr inbounds nuw i8, ptr %1146, i64 256
  %1351 = load <8 x double>, ptr %1350, align 64, !tbaa !25
  %1352 = getelementptr inbounds nuw i8, ptr %1146, i64 320
  %1353 = load <8 x double>, ptr %1352, align 64, !tbaa !25
  %1354 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1347, <8 x double> %1353, <8 x double> %1351)
  %1355 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1347, <8 x double> %1354, <8 x double> %1349)
  %1356 = fmul <8 x double> %1329, %1355
  %1357 = fmul <8 x double> %1216, %1356
  %1358 = getelementptr inbounds nuw i8, ptr %1146, i64 2048
  %1359 = load <8 x double>, ptr %1358, align 64, !tbaa !25
  %1360 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1357, <8 x double> %1359, <8 x double> splat (double 1.000000e+00))
  %1361 = fdiv <8 x double> splat (double 1.000000e+00), %1360
  %1362 = icmp eq <8 x i64> %1228, zeroinitializer
  %1363 = select <8 x i1> %1362, <8 x double> %1361, <8 x double> splat (double 1.000000e+00)
  %1364 = getelementptr inbounds nuw i8, ptr %1146, i64 6848
  store <8 x double> %1363, ptr %1364, align 64, !tbaa !25
  %1365 = fmul <8 x double> %1356, %1363
  %1366 = getelementptr inbounds nuw i8, ptr %1146, i64 6016
  store <8 x double> %1365, ptr %1366, align 64, !tbaa !25
  %1367 = fmul <8 x double> %1275, splat (double 2.000000e+00)
  %1368 = getelementptr inbounds nuw i8, ptr %1146, i64 384
  %1369 = load <8 x double>, ptr %1368, align 64, !tbaa !25
  %1370 = getelementptr inbounds nuw i8, ptr %1146, i64 448
  %1371 = load <8 x double>, ptr %1370, align 64, !tbaa !25
  %1372 = getelementptr inbounds nuw i8, ptr %1146, i64 512
  %1373 = load <8 x double>, ptr %1372, align 64, !tbaa !25
  %1374 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1331, <8 x double> %1373, <8 x double> %1371)
  %1375 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1331, <8 x double> %1374, <8 x double> %1369)
  %1376 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1367, <8 x double> %1375, <8 x double> %1365)
  %1377 = getelementptr inbounds nuw i8, ptr %1146, i64 6144
  store <8 x double> %1376, ptr %1377, align 64, !tbaa !25
  %1378 = fmul <8 x double> %1201, %1242
  %1379 = getelementptr inbounds nuw i8, ptr %1146, i64 1984
  %1380 = load <8 x double>, ptr %1379, align 64, !tbaa !25
  %1381 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1378, <8 x double> %1380, <8 x double> splat (double 1.000000e+00))
  %1382 = fdiv <8 x double> %1201, %1381
  %1383 = load i64, ptr %141, align 16, !tbaa !21
  %1384 = sitofp i64 %1383 to double
  %1385 = fmul double %1384, 2.000000e+00
  %1386 = insertelement <8 x double> poison, double %1385, i64 0
  %1387 = shufflevector <8 x double> %1386, <8 x double> poison, <8 x i32> zeroinitializer
  %1388 = fmul <8 x double> %1338, %1387
  %1389 = fadd <8 x double> %1382, %1388
  %1390 = fdiv <8 x double> %1382, %1389
  %1391 = fmul <8 x double> %1287, %1388
  %1392 = select <8 x i1> %1362, <8 x double> %1382, <8 x double> %1391
  %1393 = getelementptr inbounds nuw i8, ptr %1146, i64 6080
  store <8 x double> %1392, ptr %1393, align 64, !tbaa !25
  %1394 = fmul <8 x double> %1388, %1390
  %1395 = select <8 x i1> %1362, <8 x double> %1382, <8 x double> %1394
  %1396 = getelementptr inbounds nuw i8, ptr %1146, i64 6208
  store <8 x double> %1395, ptr %1396, align 64, !tbaa !25
  %1397 = select <8 x i1> %1362, <8 x double> splat (double 1.000000e+00), <8 x double> %1390
  %1398 = getelementptr inbounds nuw i8, ptr %1146, i64 6272
  store <8 x double> %1397, ptr %1398, align 64, !tbaa !25
  %1399 = load i64, ptr %140, align 8, !tbaa !20
  br i1 %1291, label %1406, label %1400

1400:                                             ; preds = %1327
  %1401 = fmul <8 x double> %1371, splat (double 5.000000e-01)
  %1402 = fmul <8 x double> %1373, splat (double 0x3FE5555555555555)
  %1403 = load <8 x double>, ptr %1341, align 64, !tbaa !25
  %1404 = getelementptr inbounds nuw i8, ptr %1146, i64 640
  %1405 = load <8 x double>, ptr %1404, align 64, !tbaa !25
  br label %1417

1406:                                             ; preds = %1327
  %1407 = fdiv <8 x double> %1287, %1240
  %1408 = fmul <8 x double> %1371, splat (double 5.000000e-01)
  %1409 = fmul <8 x double> %1373, splat (double 0x3FE5555555555555)
  %1410 = load <8 x double>, ptr %1341, align 64, !tbaa !25
  %1411 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1410, <8 x double> %1373, <8 x double> %1371)
  %1412 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1410, <8 x double> %1411, <8 x double> %1369)
  %1413 = fneg <8 x double> %1410
  %1414 = fmul <8 x double> %1410, %1413
  %1415 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1410, <8 x double> %1409, <8 x double> %1408)
  %1416 = fmul <8 x double> %1414, %1415
  br label %1417

1417:                                             ; preds = %1406, %1400
  %1418 = phi <8 x double> [ %1405, %1400 ], [ %1412, %1406 ]
  %1419 = phi <8 x double> [ %1328, %1400 ], [ %1407, %1406 ]
  %1420 = phi <8 x double> [ %1401, %1400 ], [ %1408, %1406 ]
  %1421 = phi <8 x double> [ %1402, %1400 ], [ %1409, %1406 ]
  %1422 = phi <8 x double> [ %1403, %1400 ], [ %1410, %1406 ]
  %1423 = phi <8 x double> [ zeroinitializer, %1400 ], [ %1416, %1406 ]
  %1424 = getelementptr inbounds nuw i8, ptr %1146, i64 1536
  %1425 = load <8 x double>, ptr %1424, align 64, !tbaa !25
  %1426 = fsub <8 x double> %1266, %1425
  %1427 = icmp sgt i64 %1399, 0
  br i1 %1427, label %1428, label %1604

1428:                                             ; preds = %1417
  %1429 = getelementptr inbounds nuw i8, ptr %1146, i64 640
  %1430 = getelementptr inbounds nuw i8, ptr %1146, i64 7672
  %1431 = getelementptr inbounds nuw i8, ptr %1146, i64 2880
  %1432 = getelementptr inbounds nuw i8, ptr %1146, i64 2816
  %1433 = getelementptr inbounds nuw i8, ptr %1146, i64 576
  %1434 = getelementptr inbounds nuw i8, ptr %1146, i64 7648
  %1435 = getelementptr inbounds nuw i8, ptr %1146, i64 7656
  %1436 = getelementptr inbounds nuw i8, ptr %1146, i64 7584
  %1437 = getelementptr inbounds nuw i8, ptr %1146, i64 7624
  %1438 = getelementptr inbounds nuw i8, ptr %1146, i64 7632
  %1439 = getelementptr inbounds nuw i8, ptr %1146, i64 7640
  %1440 = getelementptr inbounds nuw i8, ptr %1146, i64 7608
  %1441 = getelementptr inbounds nuw i8, ptr %1146, i64 7616
  br label %1442

1442:                                             ; preds = %1428, %1555
  %1443 = phi <8 x double> [ %1422, %1428 ], [ %1559, %1555 ]
  %1444 = phi <8 x double> [ zeroinitializer, %1428 ], [ %1556, %1555 ]
  %1445 = phi <8 x double> [ zeroinitializer, %1428 ], [ %1557, %1555 ]
  %1446 = phi <8 x double> [ zeroinitializer, %1428 ], [ %1558, %1555 ]
  %1447 = phi <8 x double> [ zeroinitializer, %1428 ], [ %1590, %1555 ]
  %1448 = phi <8 x double> [ zeroinitializer, %1428 ], [ %1593, %1555 ]
  %1449 = phi <8 x double> [ %1418, %1428 ], [ %1560, %1555 ]
  %1450 = phi <8 x double> [ %1423, %1428 ], [ %1561, %1555 ]
  %1451 = phi i64 [ 0, %1428 ], [ %1452, %1555 ]
  %1452 = add nuw nsw i64 %1451, 1
  %1453 = icmp slt i64 %1452, %1399
  br i1 %1453, label %1454, label %1545

1454:                                             ; preds = %1442
  %1455 = load ptr, ptr %1340, align 8, !tbaa !58
  %1456 = getelementptr inbounds nuw <8 x double>, ptr %1455, i64 %1452
  %1457 = load <8 x double>, ptr %1456, align 64, !tbaa !25
  %1458 = icmp slt i64 %1452, %1290
  br i1 %1458, label %1459, label %1461

1459:                                             ; preds = %1454
  %1460 = load <8 x double>, ptr %1429, align 64, !tbaa !25
  br label %1471

1461:                                             ; preds = %1454
  %1462 = load <8 x double>, ptr %1368, align 64, !tbaa !25
  %1463 = load <8 x double>, ptr %1370, align 64, !tbaa !25
  %1464 = load <8 x double>, ptr %1372, align 64, !tbaa !25
  %1465 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1464, <8 x double> %1463)
  %1466 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1465, <8 x double> %1462)
  %1467 = fneg <8 x double> %1457
  %1468 = fmul <8 x double> %1457, %1467
  %1469 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1421, <8 x double> %1420)
  %1470 = fmul <8 x double> %1468, %1469
  br label %1471

1471:                                             ; preds = %1461, %1459
  %1472 = phi <8 x double> [ %1460, %1459 ], [ %1466, %1461 ]
  %1473 = phi <8 x double> [ zeroinitializer, %1459 ], [ %1470, %1461 ]
  %1474 = load i64, ptr %1289, align 64, !tbaa !30
  %1475 = icmp eq i64 %1474, 0
  %1476 = load ptr, ptr %1430, align 8, !tbaa !34
  br i1 %1475, label %1477, label %1481

1477:                                             ; preds = %1471
  %1478 = getelementptr inbounds nuw <8 x double>, ptr %1476, i64 %1452
  %1479 = load <8 x double>, ptr %1478, align 64, !tbaa !25
  %1480 = fmul <8 x double> %1419, %1479
  br label %1497

1481:                                             ; preds = %1471
  %1482 = shl nsw i64 %1452, 8
  %1483 = getelementptr inbounds nuw i8, ptr %1476, i64 %1482
  %1484 = load <8 x double>, ptr %1483, align 64, !tbaa !25
  %1485 = getelementptr inbounds nuw i8, ptr %1483, i64 64
  %1486 = load <8 x double>, ptr %1485, align 64, !tbaa !25
  %1487 = getelementptr inbounds nuw i8, ptr %1483, i64 128
  %1488 = load <8 x double>, ptr %1487, align 64, !tbaa !25
  %1489 = getelementptr inbounds nuw i8, ptr %1483, i64 192
  %1490 = load <8 x double>, ptr %1489, align 64, !tbaa !25
  %1491 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1490, <8 x double> %1488)
  %1492 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1491, <8 x double> %1486)
  %1493 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1240, <8 x double> %1492, <8 x double> %1484)
  %1494 = icmp slt i64 %1451, %1474
  %1495 = fmul <8 x double> %1419, %1493
  %1496 = select i1 %1494, <8 x double> %1493, <8 x double> %1495
  br label %1497

1497:                                             ; preds = %1481, %1477
  %1498 = phi <8 x double> [ %1480, %1477 ], [ %1496, %1481 ]
  %1499 = icmp slt i64 %1451, %1474
  br i1 %1499, label %1509, label %1500

1500:                                             ; preds = %1497
  %1501 = fadd <8 x double> %1443, %1457
  %1502 = fmul <8 x double> %1501, splat (double 5.000000e-01)
  %1503 = load <8 x double>, ptr %1348, align 64, !tbaa !25
  %1504 = load <8 x double>, ptr %1350, align 64, !tbaa !25
  %1505 = load <8 x double>, ptr %1352, align 64, !tbaa !25
  %1506 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1502, <8 x double> %1505, <8 x double> %1504)
  %1507 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1502, <8 x double> %1506, <8 x double> %1503)
  %1508 = fmul <8 x double> %1498, %1507
  br label %1530

1509:                                             ; preds = %1497
  %1510 = icmp slt i64 %1452, %1474
  br i1 %1510, label %1511, label %1514

1511:                                             ; preds = %1509
  %1512 = load <8 x double>, ptr %1433, align 64, !tbaa !25
  %1513 = fmul <8 x double> %1498, %1512
  br label %1530

1514:                                             ; preds = %1509
  %1515 = load <8 x double>, ptr %1431, align 64, !tbaa !25
  %1516 = load <8 x double>, ptr %1334, align 64, !tbaa !25
  %1517 = fsub <8 x double> %1240, %1516
  %1518 = fmul <8 x double> %1515, %1517
  %1519 = load <8 x double>, ptr %1432, align 64, !tbaa !25
  %1520 = load <8 x double>, ptr %1433, align 64, !tbaa !25
  %1521 = fdiv <8 x double> %1519, %1520
  %1522 = load <8 x double>, ptr %1348, align 64, !tbaa !25
  %1523 = load <8 x double>, ptr %1350, align 64, !tbaa !25
  %1524 = load <8 x double>, ptr %1352, align 64, !tbaa !25
  %1525 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1524, <8 x double> %1523)
  %1526 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1457, <8 x double> %1525, <8 x double> %1522)
  %1527 = fdiv <8 x double> %1518, %1526
  %1528 = fadd <8 x double> %1521, %1527
  %1529 = fdiv <8 x double> %1498, %1528
  br label %1530

1530:                                             ; preds = %1500, %1511, %1514
  %1531 = phi <8 x double> [ %1508, %1500 ], [ %1513, %1511 ], [ %1529, %1514 ]
  br i1 %1458, label %1538, label %1532

1532:                                             ; preds = %1530
  %1533 = load ptr, ptr %1434, align 32, !tbaa !71
  %1534 = getelementptr inbounds nuw <8 x double>, ptr %1533, i64 %1452
  %1535 = load <8 x double>, ptr %1534, align 64, !tbaa !25
  %1536 = load <8 x double>, ptr %1276, align 64, !tbaa !25
  %1537 = fmul <8 x double> %1535, %1536
  br label %1538

1538:                                             ; preds = %1530, %1532
  %1539 = phi <8 x double> [ %1537, %1532 ], [ zeroinitializer, %1530 ]
  %1540 = fneg <8 x double> %1539
  %1541 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1540, <8 x double> %1449, <8 x double> %1531)
  %1542 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1539, <8 x double> %1472, <8 x double> %1531)
  %1543 = fadd <8 x double> %1450, %1473
  %1544 = fmul <8 x double> %1543, %1539
  br label %1555

1545:                                             ; preds = %1442
  %1546 = load <8 x double>, ptr %1330, align 64, !tbaa !25
  %1547 = load <8 x double>, ptr %1366, align 64, !tbaa !25
  %1548 = load <8 x double>, ptr %1377, align 64, !tbaa !25
  %1549 = load <8 x double>, ptr %1276, align 64, !tbaa !25
  %1550 = fmul <8 x double> %1549, splat (double -2.000000e+00)
  %1551 = fmul <8 x double> %1546, %1550
  %1552 = fmul <8 x double> %1546, %1551
  %1553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1546, <8 x double> %1421, <8 x double> %1420)
  %1554 = fmul <8 x double> %1553, %1552
  br label %1555

1555:                                             ; preds = %1545, %1538
  %1556 = phi <8 x double> [ %1541, %1538 ], [ %1547, %1545 ]
  %1557 = phi <8 x double> [ %1542, %1538 ], [ %1548, %1545 ]
  %1558 = phi <8 x double> [ %1544, %1538 ], [ %1554, %1545 ]
  %1559 = phi <8 x double> [ %1457, %1538 ], [ %1443, %1545 ]
  %1560 = phi <8 x double> [ %1472, %1538 ], [ %1449, %1545 ]
  %1561 = phi <8 x double> [ %1473, %1538 ], [ %1450, %1545 ]
  %1562 = load ptr, ptr %1435, align 8, !tbaa !48
  %1563 = getelementptr inbounds nuw <8 x double>, ptr %1562, i64 %1451
  %1564 = load <8 x double>, ptr %1563, align 64, !tbaa !25
  %1565 = icmp slt i64 %1451, %1290
  %1566 = select i1 %1565, <8 x double> %1425, <8 x double> %1426
  %1567 = fmul <8 x double> %1191, %1566
  %1568 = fmul <8 x double> %1567, %1564
  %1569 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1568, <8 x double> %1449, <8 x double> %1556)
  %1570 = fadd <8 x double> %1445, %1569
  %1571 = fsub <8 x double> %1558, %1446
  %1572 = fneg <8 x double> %1568
  %1573 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1572, <8 x double> %1450, <8 x double> %1571)
  %1574 = load ptr, ptr %1436, align 32, !tbaa !59
  %1575 = getelementptr inbounds nuw <8 x double>, ptr %1574, i64 %1451
  %1576 = load <8 x double>, ptr %1575, align 64, !tbaa !25
  %1577 = fsub <8 x double> %1573, %1576
  %1578 = fneg <8 x double> %1444
  %1579 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1578, <8 x double> %1448, <8 x double> %1570)
  %1580 = fdiv <8 x double> splat (double 1.000000e+00), %1579
  %1581 = load ptr, ptr %1437, align 8, !tbaa !72
  %1582 = getelementptr inbounds nuw <8 x double>, ptr %1581, i64 %1451
  store <8 x double> %1577, ptr %1582, align 64, !tbaa !25
  %1583 = load ptr, ptr %1438, align 16, !tbaa !73
  %1584 = getelementptr inbounds nuw <8 x double>, ptr %1583, i64 %1451
  store <8 x double> %1444, ptr %1584, align 64, !tbaa !25
  %1585 = fadd <8 x double> %1444, %1557
  %1586 = fsub <8 x double> %1585, %1570
  %1587 = load ptr, ptr %1439, align 8, !tbaa !74
  %1588 = getelementptr inbounds nuw <8 x double>, ptr %1587, i64 %1451
  store <8 x double> %1586, ptr %1588, align 64, !tbaa !25
  %1589 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1444, <8 x double> %1447, <8 x double> %1577)
  %1590 = fmul <8 x double> %1589, %1580
  %1591 = load ptr, ptr %1440, align 8, !tbaa !75
  %1592 = getelementptr inbounds nuw <8 x double>, ptr %1591, i64 %1451
  store <8 x double> %1590, ptr %1592, align 64, !tbaa !25
  %1593 = fmul <8 x double> %1557, %1580
  %1594 = load ptr, ptr %1441, align 64, !tbaa !76
  %1595 = getelementptr inbounds nuw <8 x double>, ptr %1594, i64 %1451
  store <8 x double> %1593, ptr %1595, align 64, !tbaa !25
  %1596 = icmp eq i64 %1452, %1399
  br i1 %1596, label %1597, label %1442, !llvm.loop !77

1597:                                             ; preds = %1555
  %1598 = load i64, ptr %140, align 8, !tbaa !20
  %1599 = load <8 x double>, ptr %1366, align 64, !tbaa !25
  %1600 = load <8 x double>, ptr %1393, align 64, !tbaa !25
  %1601 = load <8 x double>, ptr %1238, align 64, !tbaa !25
  %1602 = load <8 x double>, ptr %1235, align 64, !tbaa !25
  %1603 = load <8 x i64>, ptr %1227, align 64, !tbaa !25
  br label %1604

1604:                                             ; preds = %1597, %1417
  %1605 = phi <8 x i64> [ %1603, %1597 ], [ %1228, %1417 ]
  %1606 = phi <8 x double> [ %1602, %1597 ], [ %1234, %1417 ]
  %1607 = phi <8 x double> [ %1601, %1597 ], [ %1237, %1417 ]
  %1608 = phi <8 x double> [ %1600, %1597 ], [ %1392, %1417 ]
  %1609 = phi <8 x double> [ %1599, %1597 ], [ %1365, %1417 ]
  %1610 = phi i64 [ %1598, %1597 ], [ %1399, %1417 ]
  %1611 = getelementptr inbounds nuw i8, ptr %1146, i64 7608
  %1612 = load ptr, ptr %1611, align 8, !tbaa !75
  %1613 = add nsw i64 %1610, -1
  %1614 = getelementptr inbounds <8 x double>, ptr %1612, i64 %1613
  %1615 = load <8 x double>, ptr %1614, align 64, !tbaa !25
  %1616 = getelementptr inbounds nuw i8, ptr %1146, i64 7616
  %1617 = load ptr, ptr %1616, align 64, !tbaa !76
  %1618 = getelementptr inbounds <8 x double>, ptr %1617, i64 %1613
  %1619 = load <8 x double>, ptr %1618, align 64, !tbaa !25
  %1620 = fmul <8 x double> %1615, %1609
  %1621 = fsub <8 x double> splat (double 1.000000e+00), %1619
  %1622 = fmul <8 x double> %1609, %1621
  %1623 = load <8 x double>, ptr %1199, align 64, !tbaa !25
  %1624 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1608, <8 x double> %1623, <8 x double> %1620)
  %1625 = fsub <8 x double> %1624, %1607
  %1626 = fadd <8 x double> %1622, %1608
  %1627 = fadd <8 x double> %1626, %1606
  %1628 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1605)
  %1629 = icmp eq i64 %1628, 0
  %1630 = load i64, ptr %141, align 16, !tbaa !21
  br i1 %1629, label %1631, label %1646

1631:                                             ; preds = %1604
  %1632 = icmp slt i64 %1630, 0
  br i1 %1632, label %1637, label %1633

1633:                                             ; preds = %1631
  %1634 = getelementptr inbounds nuw i8, ptr %1146, i64 1408
  %1635 = getelementptr inbounds nuw i8, ptr %1146, i64 7728
  %1636 = load <8 x double>, ptr %1634, align 64, !tbaa !25
  br label %1639

1637:                                             ; preds = %1639, %1631
  %1638 = getelementptr inbounds nuw i8, ptr %1146, i64 5824
  store <8 x double> %1625, ptr %1638, align 64, !tbaa !25
  br label %1773

1639:                                             ; preds = %1633, %1639
  %1640 = phi i64 [ 0, %1633 ], [ %1643, %1639 ]
  %1641 = load ptr, ptr %1635, align 16, !tbaa !78
  %1642 = getelementptr inbounds nuw <8 x double>, ptr %1641, i64 %1640
  store <8 x double> %1636, ptr %1642, align 64, !tbaa !25
  %1643 = add nuw nsw i64 %1640, 1
  %1644 = load i64, ptr %141, align 16, !tbaa !21
  %1645 = icmp slt i64 %1640, %1644
  br i1 %1645, label %1639, label %1637, !llvm.loop !79

1646:                                             ; preds = %1604
  %1647 = load <8 x double>, ptr %1206, align 64, !tbaa !25
  %1648 = load <8 x double>, ptr %1255, align 64, !tbaa !25
  %1649 = getelementptr inbounds nuw i8, ptr %1146, i64 1280
  %1650 = load <8 x double>, ptr %1649, align 64, !tbaa !25
  %1651 = fmul <8 x double> %1648, %1650
  %1652 = load <8 x double>, ptr %1146, align 64, !tbaa !25
  %1653 = fsub <8 x double> %1652, %1647
  %1654 = sitofp i64 %1630 to double
  %1655 = insertelement <8 x double> poison, double %1654, i64 0
  %1656 = shufflevector <8 x double> %1655, <8 x double> poison, <8 x i32> zeroinitializer
  %1657 = fdiv <8 x double> %1653, %1656
  %1658 = load <8 x double>, ptr %1396, align 64, !tbaa !25
  %1659 = load <8 x double>, ptr %1398, align 64, !tbaa !25
  %1660 = getelementptr inbounds nuw i8, ptr %1146, i64 1408
  %1661 = load <8 x double>, ptr %1660, align 64, !tbaa !25
  %1662 = getelementptr inbounds nuw i8, ptr %1146, i64 7728
  %1663 = load ptr, ptr %1662, align 16, !tbaa !78
  %1664 = getelementptr inbounds <8 x double>, ptr %1663, i64 %1630
  store <8 x double> %1661, ptr %1664, align 64, !tbaa !25
  %1665 = icmp sgt i64 %1630, 0
  br i1 %1665, label %1666, label %1757

1666:                                             ; preds = %1646
  %1667 = fneg <8 x double> %1651
  %1668 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1667, <8 x double> %1659, <8 x double> %1658)
  %1669 = fsub <8 x double> splat (double 1.000000e+00), %1659
  %1670 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1651, <8 x double> %1669, <8 x double> %1658)
  %1671 = getelementptr inbounds nuw i8, ptr %1146, i64 7736
  %1672 = getelementptr inbounds nuw i8, ptr %1146, i64 7744
  %1673 = getelementptr inbounds nuw i8, ptr %1146, i64 768
  %1674 = fmul <8 x double> %1651, splat (double -5.000000e-01)
  %1675 = getelementptr inbounds nuw i8, ptr %1146, i64 7704
  %1676 = getelementptr inbounds nuw i8, ptr %1146, i64 7712
  %1677 = getelementptr inbounds nuw i8, ptr %1146, i64 7720
  br label %1678

1678:                                             ; preds = %1666, %1732
  %1679 = phi <8 x double> [ %1670, %1666 ], [ %1734, %1732 ]
  %1680 = phi <8 x double> [ %1668, %1666 ], [ %1735, %1732 ]
  %1681 = phi <8 x double> [ %1623, %1666 ], [ %1750, %1732 ]
  %1682 = phi <8 x double> [ zeroinitializer, %1666 ], [ %1753, %1732 ]
  %1683 = phi <8 x double> [ %1661, %1666 ], [ %1696, %1732 ]
  %1684 = phi i64 [ %1630, %1666 ], [ %1685, %1732 ]
  %1685 = add nsw i64 %1684, -1
  %1686 = uitofp nneg i64 %1685 to double
  %1687 = insertelement <8 x double> poison, double %1686, i64 0
  %1688 = shufflevector <8 x double> %1687, <8 x double> poison, <8 x i32> zeroinitializer
  %1689 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1688, <8 x double> %1657, <8 x double> %1647)
  %1690 = load <8 x double>, ptr %1256, align 64, !tbaa !25
  %1691 = load <8 x double>, ptr %1258, align 64, !tbaa !25
  %1692 = load <8 x double>, ptr %1260, align 64, !tbaa !25
  %1693 = load <8 x double>, ptr %1262, align 64, !tbaa !25
  %1694 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1689, <8 x double> %1693, <8 x double> %1692)
  %1695 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1689, <8 x double> %1694, <8 x double> %1691)
  %1696 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1689, <8 x double> %1695, <8 x double> %1690)
  %1697 = load <8 x double>, ptr %1190, align 64, !tbaa !25
  %1698 = load <8 x double>, ptr %1176, align 64, !tbaa !25
  %1699 = load ptr, ptr %1671, align 8, !tbaa !49
  %1700 = getelementptr inbounds nuw <8 x double>, ptr %1699, i64 %1685
  %1701 = load <8 x double>, ptr %1700, align 64, !tbaa !25
  %1702 = fmul <8 x double> %1698, %1701
  %1703 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1697, <8 x double> %1696, <8 x double> %1702)
  %1704 = load <8 x double>, ptr %1180, align 64, !tbaa !25
  %1705 = load ptr, ptr %1672, align 64, !tbaa !64
  %1706 = getelementptr inbounds nuw <8 x double>, ptr %1705, i64 %1685
  %1707 = load <8 x double>, ptr %1706, align 64, !tbaa !25
  %1708 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1704, <8 x double> %1707, <8 x double> %1703)
  %1709 = fmul <8 x double> %1708, splat (double 5.000000e-01)
  %1710 = icmp eq i64 %1684, 1
  br i1 %1710, label %1726, label %1711

1711:                                             ; preds = %1678
  %1712 = load <8 x double>, ptr %1673, align 64, !tbaa !25
  %1713 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1709, <8 x double> %1712, <8 x double> %1674)
  %1714 = load <8 x double>, ptr %1339, align 64, !tbaa !25
  %1715 = fmul <8 x double> %1656, %1714
  %1716 = load <8 x double>, ptr %1277, align 64, !tbaa !25
  %1717 = load <8 x double>, ptr %1279, align 64, !tbaa !25
  %1718 = load <8 x double>, ptr %1281, align 64, !tbaa !25
  %1719 = load <8 x double>, ptr %1283, align 64, !tbaa !25
  %1720 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1689, <8 x double> %1719, <8 x double> %1718)
  %1721 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1689, <8 x double> %1720, <8 x double> %1717)
  %1722 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1689, <8 x double> %1721, <8 x double> %1716)
  %1723 = fmul <8 x double> %1715, %1722
  %1724 = fsub <8 x double> %1723, %1713
  %1725 = fadd <8 x double> %1713, %1723
  br label %1732

1726:                                             ; preds = %1678
  %1727 = load <8 x double>, ptr %1393, align 64, !tbaa !25
  %1728 = load <8 x double>, ptr %1673, align 64, !tbaa !25
  %1729 = fmul <8 x double> %1709, splat (double -2.000000e+00)
  %1730 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1729, <8 x double> %1728, <8 x double> %1727)
  %1731 = fadd <8 x double> %1651, %1730
  br label %1732

1732:                                             ; preds = %1726, %1711
  %1733 = phi <8 x double> [ %1712, %1711 ], [ %1728, %1726 ]
  %1734 = phi <8 x double> [ %1724, %1711 ], [ %1731, %1726 ]
  %1735 = phi <8 x double> [ %1725, %1711 ], [ %1727, %1726 ]
  %1736 = fsub <8 x double> %1683, %1696
  %1737 = fmul <8 x double> %1697, %1736
  %1738 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1737, <8 x double> %1733, <8 x double> %1679)
  %1739 = fadd <8 x double> %1735, %1738
  %1740 = fneg <8 x double> %1680
  %1741 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1740, <8 x double> %1682, <8 x double> %1739)
  %1742 = fdiv <8 x double> splat (double 1.000000e+00), %1741
  %1743 = load ptr, ptr %1662, align 16, !tbaa !78
  %1744 = getelementptr inbounds nuw <8 x double>, ptr %1743, i64 %1685
  store <8 x double> %1696, ptr %1744, align 64, !tbaa !25
  %1745 = load ptr, ptr %1675, align 8, !tbaa !66
  %1746 = getelementptr inbounds nuw <8 x double>, ptr %1745, i64 %1685
  %1747 = load <8 x double>, ptr %1746, align 64, !tbaa !25
  %1748 = fneg <8 x double> %1747
  %1749 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1680, <8 x double> %1681, <8 x double> %1748)
  %1750 = fmul <8 x double> %1742, %1749
  %1751 = load ptr, ptr %1676, align 32, !tbaa !80
  %1752 = getelementptr inbounds nuw <8 x double>, ptr %1751, i64 %1685
  store <8 x double> %1750, ptr %1752, align 64, !tbaa !25
  %1753 = fmul <8 x double> %1734, %1742
  %1754 = load ptr, ptr %1677, align 8, !tbaa !81
  %1755 = getelementptr inbounds nuw <8 x double>, ptr %1754, i64 %1685
  store <8 x double> %1753, ptr %1755, align 64, !tbaa !25
  %1756 = icmp samesign ugt i64 %1684, 1
  br i1 %1756, label %1678, label %1757, !llvm.loop !82

1757:                                             ; preds = %1732, %1646
  %1758 = load <8 x i64>, ptr %1227, align 64, !tbaa !25
  %1759 = load <8 x double>, ptr %1393, align 64, !tbaa !25
  %1760 = getelementptr inbounds nuw i8, ptr %1146, i64 7712
  %1761 = load ptr, ptr %1760, align 32, !tbaa !80
  %1762 = load <8 x double>, ptr %1761, align 64, !tbaa !25
  %1763 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1759, <8 x double> %1762, <8 x double> %1620)
  %1764 = icmp eq <8 x i64> %1758, zeroinitializer
  %1765 = select <8 x i1> %1764, <8 x double> %1625, <8 x double> %1763
  %1766 = getelementptr inbounds nuw i8, ptr %1146, i64 5824
  store <8 x double> %1765, ptr %1766, align 64, !tbaa !25
  %1767 = getelementptr inbounds nuw i8, ptr %1146, i64 7720
  %1768 = load ptr, ptr %1767, align 8, !tbaa !81
  %1769 = load <8 x double>, ptr %1768, align 64, !tbaa !25
  %1770 = fsub <8 x double> splat (double 1.000000e+00), %1769
  %1771 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1759, <8 x double> %1770, <8 x double> %1622)
  %1772 = select <8 x i1> %1764, <8 x double> %1627, <8 x double> %1771
  br label %1773

1773:                                             ; preds = %1637, %1757
  %1774 = phi <8 x double> [ %1627, %1637 ], [ %1772, %1757 ]
  %1775 = getelementptr inbounds nuw i8, ptr %1146, i64 5888
  store <8 x double> %1774, ptr %1775, align 64, !tbaa !25
  %1776 = add nuw nsw i64 %1144, 1
  %1777 = load i64, ptr %149, align 64, !tbaa !16
  %1778 = icmp slt i64 %1776, %1777
  br i1 %1778, label %1143, label %1140, !llvm.loop !83

1779:                                             ; preds = %1880, %1138, %1140
  %1780 = phi <8 x double> [ %1141, %1140 ], [ %1139, %1138 ], [ %1141, %1880 ]
  %1781 = phi i64 [ %1777, %1140 ], [ %1133, %1138 ], [ %1881, %1880 ]
  %1782 = fcmp ogt <8 x double> %1780, zeroinitializer
  %1783 = bitcast <8 x i1> %1782 to i8
  %1784 = icmp eq i8 %1783, 0
  br i1 %1784, label %1967, label %1884

1785:                                             ; preds = %1140, %1880
  %1786 = phi i64 [ %1881, %1880 ], [ %1777, %1140 ]
  %1787 = phi i64 [ %1882, %1880 ], [ 0, %1140 ]
  %1788 = load ptr, ptr %150, align 8, !tbaa !27
  %1789 = getelementptr inbounds nuw %struct.Piece, ptr %1788, i64 %1787
  %1790 = getelementptr inbounds nuw i8, ptr %1789, i64 7488
  %1791 = load <8 x i64>, ptr %1790, align 64, !tbaa !25
  %1792 = getelementptr inbounds nuw i8, ptr %1789, i64 2240
  %1793 = load <8 x double>, ptr %1792, align 64, !tbaa !25
  %1794 = fcmp ogt <8 x double> %1793, zeroinitializer
  %1795 = select <8 x i1> %1794, <8 x i64> %1791, <8 x i64> zeroinitializer
  %1796 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1795)
  %1797 = icmp eq i64 %1796, 0
  br i1 %1797, label %1880, label %1798

1798:                                             ; preds = %1785
  %1799 = load <8 x double>, ptr %183, align 64, !tbaa !25
  %1800 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1799, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1801 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1799, <8 x double> %1800, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1802 = load <8 x double>, ptr %184, align 64, !tbaa !25
  %1803 = getelementptr inbounds nuw i8, ptr %1789, i64 5824
  %1804 = load <8 x double>, ptr %1803, align 64, !tbaa !25
  %1805 = getelementptr inbounds nuw i8, ptr %1789, i64 5888
  %1806 = load <8 x double>, ptr %1805, align 64, !tbaa !25
  %1807 = fdiv <8 x double> %1804, %1806
  %1808 = fcmp olt <8 x double> %1807, %1799
  %1809 = select <8 x i1> %1808, <8 x double> %1807, <8 x double> %1799
  %1810 = getelementptr inbounds nuw i8, ptr %1789, i64 5568
  %1811 = load <8 x double>, ptr %1810, align 64, !tbaa !25
  %1812 = fcmp olt <8 x double> %1811, %1809
  %1813 = select <8 x i1> %1812, <8 x double> %1811, <8 x double> %1809
  %1814 = fneg <8 x double> %1806
  %1815 = getelementptr inbounds nuw i8, ptr %1789, i64 7104
  %1816 = load <8 x double>, ptr %1815, align 64, !tbaa !25
  br label %1820

1817:                                             ; preds = %1820
  %1818 = getelementptr inbounds nuw i8, ptr %1789, i64 5952
  store <8 x double> %1871, ptr %1818, align 64, !tbaa !25
  %1819 = load i64, ptr %149, align 64, !tbaa !16
  br label %1880

1820:                                             ; preds = %1798, %1820
  %1821 = phi <8 x i64> [ %1795, %1798 ], [ %1874, %1820 ]
  %1822 = phi i32 [ 0, %1798 ], [ %1875, %1820 ]
  %1823 = phi <8 x double> [ %1813, %1798 ], [ %1871, %1820 ]
  %1824 = fadd <8 x double> %1823, splat (double 2.731500e+02)
  %1825 = fcmp ogt <8 x double> %1823, zeroinitializer
  %1826 = select <8 x i1> %1825, <8 x double> %1823, <8 x double> zeroinitializer
  %1827 = fadd <8 x double> %1826, splat (double 2.731500e+02)
  %1828 = fadd <8 x double> %1827, splat (double 0xC08451671D164BD4)
  %1829 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %1828
  %1830 = fsub <8 x double> %1827, %1829
  %1831 = fadd <8 x double> %1830, splat (double 0x40923C3565924845)
  %1832 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1830, <8 x double> %1831, <8 x double> splat (double 0xC12619EA558539E6))
  %1833 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1830, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %1834 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1830, <8 x double> %1833, <8 x double> splat (double 0xC148A99584203885))
  %1835 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1830, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %1836 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1830, <8 x double> %1835, <8 x double> splat (double 0x4118B9E59F2691E5))
  %1837 = fmul <8 x double> %1836, splat (double 2.000000e+00)
  %1838 = fmul <8 x double> %1832, splat (double 4.000000e+00)
  %1839 = fneg <8 x double> %1836
  %1840 = fmul <8 x double> %1838, %1839
  %1841 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1834, <8 x double> %1834, <8 x double> %1840)
  %1842 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1841)
  %1843 = fsub <8 x double> %1842, %1834
  %1844 = fdiv <8 x double> %1837, %1843
  %1845 = fmul <8 x double> %1844, %1844
  %1846 = fmul <8 x double> %1845, splat (double 1.000000e+06)
  %1847 = fmul <8 x double> %1845, %1846
  %1848 = fmul <8 x double> %1824, splat (double 4.615260e+02)
  %1849 = fdiv <8 x double> %1847, %1848
  %1850 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1814, <8 x double> %1823, <8 x double> %1804)
  %1851 = fsub <8 x double> %1849, %1802
  %1852 = fcmp ogt <8 x double> %1851, zeroinitializer
  %1853 = select <8 x i1> %1852, <8 x double> %1851, <8 x double> zeroinitializer
  %1854 = fmul <8 x double> %1801, %1853
  %1855 = fdiv <8 x double> %1854, %1816
  %1856 = fsub <8 x double> %1850, %1855
  %1857 = fmul <8 x double> %1801, %1849
  %1858 = fdiv <8 x double> %1801, %1848
  %1859 = fadd <8 x double> %1858, splat (double -1.000000e+00)
  %1860 = fmul <8 x double> %1859, %1857
  %1861 = fdiv <8 x double> %1860, %1824
  %1862 = fdiv <8 x double> %1861, %1816
  %1863 = fcmp ule <8 x double> %1849, %1802
  %1864 = select <8 x i1> %1863, <8 x double> zeroinitializer, <8 x double> %1862
  %1865 = fsub <8 x double> %1814, %1864
  %1866 = fdiv <8 x double> %1856, %1865
  %1867 = fsub <8 x double> %1823, %1866
  %1868 = fcmp olt <8 x double> %1867, %1809
  %1869 = select <8 x i1> %1868, <8 x double> %1867, <8 x double> %1809
  %1870 = icmp eq <8 x i64> %1821, zeroinitializer
  %1871 = select <8 x i1> %1870, <8 x double> %1823, <8 x double> %1869
  %1872 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1866)
  %1873 = fcmp oge <8 x double> %1872, splat (double 0x3EB0C6F7A0B5ED8D)
  %1874 = select <8 x i1> %1873, <8 x i64> %1821, <8 x i64> zeroinitializer
  %1875 = add nuw nsw i32 %1822, 1
  %1876 = icmp samesign ult i32 %1822, 7
  %1877 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1874)
  %1878 = icmp ne i64 %1877, 0
  %1879 = select i1 %1876, i1 %1878, i1 false
  br i1 %1879, label %1820, label %1817, !llvm.loop !84

1880:                                             ; preds = %1785, %1817
  %1881 = phi i64 [ %1786, %1785 ], [ %1819, %1817 ]
  %1882 = add nuw nsw i64 %1787, 1
  %1883 = icmp slt i64 %1882, %1881
  br i1 %1883, label %1785, label %1779, !llvm.loop !85

1884:                                             ; preds = %1779
  %1885 = sext <8 x i1> %1782 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %1885, ptr %4, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %1886 = load <8 x double>, ptr %159, align 64, !tbaa !25
  %1887 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %1888 = fadd <8 x double> %1886, %1887
  store <8 x double> %1888, ptr %6, align 64, !tbaa !25
  %1889 = load ptr, ptr %174, align 8
  %1890 = load ptr, ptr %176, align 8
  %1891 = load ptr, ptr %177, align 8
  br label %1892

1892:                                             ; preds = %1962, %1884
  %1893 = phi i64 [ 0, %1884 ], [ %1963, %1962 ]
  %1894 = getelementptr inbounds nuw i64, ptr %4, i64 %1893
  %1895 = load i64, ptr %1894, align 8, !tbaa !29
  %1896 = icmp eq i64 %1895, 0
  br i1 %1896, label %1962, label %1897

1897:                                             ; preds = %1892
  %1898 = getelementptr inbounds nuw [8 x i64], ptr %142, i64 0, i64 %1893
  %1899 = load i64, ptr %1898, align 8, !tbaa !29
  %1900 = shl nsw i64 %1899, 1
  %1901 = or disjoint i64 %1900, 1
  %1902 = getelementptr inbounds i64, ptr %1889, i64 %1901
  %1903 = load i64, ptr %1902, align 8, !tbaa !29
  %1904 = shl nuw nsw i64 %1893, 1
  %1905 = or disjoint i64 %1904, 1
  %1906 = getelementptr inbounds nuw [16 x i64], ptr %175, i64 0, i64 %1905
  %1907 = getelementptr inbounds i64, ptr %1891, i64 %1901
  %1908 = load i64, ptr %1907, align 8, !tbaa !29
  %1909 = shl nsw i64 %1908, 4
  %1910 = getelementptr inbounds i8, ptr %1890, i64 %1909
  %1911 = getelementptr inbounds nuw double, ptr %6, i64 %1893
  %1912 = load double, ptr %1911, align 8, !tbaa !42
  %1913 = load i64, ptr %1906, align 8, !tbaa !29
  %1914 = getelementptr i8, ptr %1910, i64 -16
  %1915 = icmp sgt i64 %1913, 0
  br i1 %1915, label %1916, label %1925

1916:                                             ; preds = %1897, %1922
  %1917 = phi i64 [ %1923, %1922 ], [ %1913, %1897 ]
  %1918 = shl i64 %1917, 4
  %1919 = getelementptr i8, ptr %1914, i64 %1918
  %1920 = load double, ptr %1919, align 8, !tbaa !42
  %1921 = fcmp ugt double %1912, %1920
  br i1 %1921, label %1925, label %1922

1922:                                             ; preds = %1916
  %1923 = add nsw i64 %1917, -1
  store i64 %1923, ptr %1906, align 8, !tbaa !29
  %1924 = icmp sgt i64 %1917, 1
  br i1 %1924, label %1916, label %1925, !llvm.loop !68

1925:                                             ; preds = %1922, %1916, %1897
  %1926 = phi i64 [ %1913, %1897 ], [ 0, %1922 ], [ %1917, %1916 ]
  %1927 = icmp slt i64 %1926, %1903
  br i1 %1927, label %1928, label %1937

1928:                                             ; preds = %1925, %1934
  %1929 = phi i64 [ %1935, %1934 ], [ %1926, %1925 ]
  %1930 = shl nsw i64 %1929, 4
  %1931 = getelementptr inbounds i8, ptr %1910, i64 %1930
  %1932 = load double, ptr %1931, align 8, !tbaa !42
  %1933 = fcmp ule double %1912, %1932
  br i1 %1933, label %1942, label %1934

1934:                                             ; preds = %1928
  %1935 = add i64 %1929, 1
  store i64 %1935, ptr %1906, align 8, !tbaa !29
  %1936 = icmp eq i64 %1935, %1903
  br i1 %1936, label %1937, label %1928, !llvm.loop !69

1937:                                             ; preds = %1934, %1925
  %1938 = shl i64 %1903, 4
  %1939 = getelementptr i8, ptr %1910, i64 %1938
  %1940 = getelementptr i8, ptr %1939, i64 -8
  %1941 = load double, ptr %1940, align 8, !tbaa !42
  br label %1959

1942:                                             ; preds = %1928
  %1943 = shl nsw i64 %1929, 1
  %1944 = or disjoint i64 %1943, 1
  %1945 = getelementptr inbounds double, ptr %1910, i64 %1944
  %1946 = load double, ptr %1945, align 8, !tbaa !42
  %1947 = icmp sgt i64 %1929, 0
  br i1 %1947, label %1948, label %1959

1948:                                             ; preds = %1942
  %1949 = getelementptr inbounds nuw i8, ptr %1910, i64 %1930
  %1950 = getelementptr i8, ptr %1949, i64 -8
  %1951 = load double, ptr %1950, align 8, !tbaa !42
  %1952 = getelementptr i8, ptr %1949, i64 -16
  %1953 = load double, ptr %1952, align 8, !tbaa !42
  %1954 = fsub double %1912, %1953
  %1955 = fsub double %1932, %1953
  %1956 = fdiv double %1954, %1955
  %1957 = fsub double %1946, %1951
  %1958 = tail call double @llvm.fmuladd.f64(double %1956, double %1957, double %1951)
  br label %1959

1959:                                             ; preds = %1948, %1942, %1937
  %1960 = phi double [ %1958, %1948 ], [ %1946, %1942 ], [ %1941, %1937 ]
  %1961 = getelementptr inbounds nuw double, ptr %5, i64 %1893
  store double %1960, ptr %1961, align 8, !tbaa !42
  br label %1962

1962:                                             ; preds = %1959, %1892
  %1963 = add nuw nsw i64 %1893, 1
  %1964 = icmp eq i64 %1963, 8
  br i1 %1964, label %1965, label %1892, !llvm.loop !70

1965:                                             ; preds = %1962
  %1966 = load <8 x double>, ptr %5, align 64, !tbaa !25
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %1967

1967:                                             ; preds = %1779, %1965
  %1968 = phi <8 x double> [ %1966, %1965 ], [ zeroinitializer, %1779 ]
  %1969 = load <8 x double>, ptr %182, align 64, !tbaa !25
  %1970 = fcmp ogt <8 x double> %1969, zeroinitializer
  %1971 = sext <8 x i1> %1970 to <8 x i64>
  %1972 = xor <8 x i64> %1971, splat (i64 -1)
  %1973 = load <8 x double>, ptr %185, align 64, !tbaa !25
  %1974 = fcmp oeq <8 x double> %1973, splat (double 1.000000e+00)
  %1975 = fcmp oeq <8 x double> %1973, splat (double 2.000000e+00)
  %1976 = or <8 x i1> %1974, %1975
  %1977 = select <8 x i1> %1976, <8 x i64> %1972, <8 x i64> zeroinitializer
  %1978 = xor <8 x i64> %1977, %1971
  %1979 = load <8 x double>, ptr %183, align 64, !tbaa !25
  %1980 = load <8 x double>, ptr %186, align 64, !tbaa !25
  %1981 = load <8 x double>, ptr %187, align 64, !tbaa !25
  %1982 = icmp eq <8 x i64> %1978, splat (i64 -1)
  %1983 = select <8 x i1> %1982, <8 x double> %1981, <8 x double> %1980
  %1984 = bitcast <8 x i1> %1970 to i8
  %1985 = icmp eq i8 %1984, 0
  br i1 %1985, label %2017, label %1986

1986:                                             ; preds = %1967
  %1987 = select <8 x i1> %1970, <8 x double> %1968, <8 x double> %1983
  %1988 = fmul <8 x double> %1987, splat (double 0x3EB0C6F7A0B5ED8D)
  %1989 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1988)
  %1990 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1989)
  %1991 = fmul <8 x double> %1990, %1990
  %1992 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1990, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %1991)
  %1993 = fadd <8 x double> %1992, splat (double 0x402DD4891DBECC6B)
  %1994 = fmul <8 x double> %1990, splat (double 0x40C77A698FD9BCCA)
  %1995 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1991, <8 x double> splat (double 0x40923C3565924845), <8 x double> %1994)
  %1996 = fadd <8 x double> %1995, splat (double 0xC0B2D7440748F0B3)
  %1997 = fmul <8 x double> %1990, splat (double 0xC148A99584203885)
  %1998 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1991, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %1997)
  %1999 = fadd <8 x double> %1998, splat (double 0x4118B9E59F2691E5)
  %2000 = fmul <8 x double> %1999, splat (double 2.000000e+00)
  %2001 = fneg <8 x double> %1996
  %2002 = fmul <8 x double> %1993, splat (double 4.000000e+00)
  %2003 = fneg <8 x double> %1999
  %2004 = fmul <8 x double> %2002, %2003
  %2005 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1996, <8 x double> %1996, <8 x double> %2004)
  %2006 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2005)
  %2007 = fsub <8 x double> %2001, %2006
  %2008 = fdiv <8 x double> %2000, %2007
  %2009 = fadd <8 x double> %2008, splat (double 0x408451671D164BD4)
  %2010 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2008, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2011 = fmul <8 x double> %2010, splat (double -4.000000e+00)
  %2012 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2009, <8 x double> %2009, <8 x double> %2011)
  %2013 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2012)
  %2014 = fsub <8 x double> %2009, %2013
  %2015 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2014, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2016 = select <8 x i1> %1970, <8 x double> %2015, <8 x double> %1979
  br label %2017

2017:                                             ; preds = %1986, %1967
  %2018 = phi <8 x double> [ %1987, %1986 ], [ %1983, %1967 ]
  %2019 = phi <8 x double> [ %2016, %1986 ], [ %1979, %1967 ]
  %2020 = load <8 x double>, ptr %168, align 64, !tbaa !25
  %2021 = load <8 x double>, ptr %188, align 64, !tbaa !25
  %2022 = load <8 x double>, ptr %169, align 64, !tbaa !25
  %2023 = load <8 x double>, ptr %189, align 64, !tbaa !25
  %2024 = fmul <8 x double> %2022, %2023
  %2025 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2020, <8 x double> %2021, <8 x double> %2024)
  %2026 = load <8 x double>, ptr %190, align 64, !tbaa !25
  %2027 = load <8 x double>, ptr %191, align 64, !tbaa !25
  %2028 = load <8 x double>, ptr %192, align 64, !tbaa !25
  %2029 = fneg <8 x double> %2025
  %2030 = fmul <8 x double> %2028, %2029
  %2031 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2026, <8 x double> %2027, <8 x double> %2030)
  %2032 = load <8 x double>, ptr %167, align 64, !tbaa !25
  %2033 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2028, <8 x double> %2032, <8 x double> %2026)
  %2034 = fdiv <8 x double> %2031, %2033
  %2035 = load <8 x double>, ptr %193, align 64, !tbaa !25
  %2036 = select <8 x i1> %1982, <8 x double> %2035, <8 x double> %1980
  store <8 x double> %2036, ptr %193, align 64, !tbaa !25
  %2037 = load <8 x double>, ptr %194, align 64, !tbaa !25
  %2038 = select <8 x i1> %1982, <8 x double> %2037, <8 x double> %2034
  store <8 x double> %2038, ptr %194, align 64, !tbaa !25
  store <8 x double> %2018, ptr %187, align 64, !tbaa !25
  %2039 = load <8 x i64>, ptr %131, align 64, !tbaa !25
  %2040 = and <8 x i64> %2039, %1977
  %2041 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2040)
  %2042 = icmp eq i64 %2041, 0
  br i1 %2042, label %2507, label %2043

2043:                                             ; preds = %2017
  %2044 = load <8 x double>, ptr %195, align 64, !tbaa !25
  %2045 = load <8 x double>, ptr %196, align 64, !tbaa !25
  %2046 = fmul <8 x double> %2022, %2045
  %2047 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2020, <8 x double> %2044, <8 x double> %2046)
  %2048 = load <8 x double>, ptr %197, align 64, !tbaa !25
  %2049 = load <8 x double>, ptr %198, align 64, !tbaa !25
  %2050 = fdiv <8 x double> %2048, %2049
  %2051 = fmul <8 x double> %1980, splat (double 3.000000e-01)
  %2052 = load <8 x double>, ptr %199, align 64, !tbaa !25
  %2053 = fadd <8 x double> %1980, %2052
  %2054 = fadd <8 x double> %2053, splat (double 2.000000e+05)
  %2055 = fmul <8 x double> %2049, splat (double 2.870530e+02)
  %2056 = fdiv <8 x double> %1980, %2055
  %2057 = fcmp ogt <8 x double> %2018, %2051
  %2058 = select <8 x i1> %2057, <8 x double> %2018, <8 x double> %2051
  %2059 = fcmp olt <8 x double> %2058, %2054
  %2060 = select <8 x i1> %2059, <8 x double> %2058, <8 x double> %2054
  %2061 = icmp eq <8 x i64> %1977, zeroinitializer
  %2062 = select <8 x i1> %2061, <8 x double> %2018, <8 x double> %2060
  %2063 = fdiv <8 x double> %2036, splat (double 2.870530e+02)
  %2064 = fmul <8 x double> %2056, splat (double 2.000000e+00)
  %2065 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2064)
  br label %2066

2066:                                             ; preds = %2293, %2043
  %2067 = phi <8 x double> [ %2019, %2043 ], [ %2101, %2293 ]
  %2068 = phi <8 x double> [ %2051, %2043 ], [ %2450, %2293 ]
  %2069 = phi <8 x double> [ %2054, %2043 ], [ %2447, %2293 ]
  %2070 = phi <8 x i64> [ %2040, %2043 ], [ %2462, %2293 ]
  %2071 = phi i32 [ 0, %2043 ], [ %2467, %2293 ]
  %2072 = phi <8 x double> [ %2062, %2043 ], [ %2464, %2293 ]
  %2073 = fmul <8 x double> %2072, splat (double 0x3EB0C6F7A0B5ED8D)
  %2074 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2073)
  %2075 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2074)
  %2076 = fmul <8 x double> %2075, %2075
  %2077 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2075, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2076)
  %2078 = fadd <8 x double> %2077, splat (double 0x402DD4891DBECC6B)
  %2079 = fmul <8 x double> %2075, splat (double 0x40C77A698FD9BCCA)
  %2080 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2076, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2079)
  %2081 = fadd <8 x double> %2080, splat (double 0xC0B2D7440748F0B3)
  %2082 = fmul <8 x double> %2075, splat (double 0xC148A99584203885)
  %2083 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2076, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2082)
  %2084 = fadd <8 x double> %2083, splat (double 0x4118B9E59F2691E5)
  %2085 = fmul <8 x double> %2084, splat (double 2.000000e+00)
  %2086 = fneg <8 x double> %2081
  %2087 = fmul <8 x double> %2078, splat (double 4.000000e+00)
  %2088 = fneg <8 x double> %2084
  %2089 = fmul <8 x double> %2087, %2088
  %2090 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2081, <8 x double> %2081, <8 x double> %2089)
  %2091 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2090)
  %2092 = fsub <8 x double> %2086, %2091
  %2093 = fdiv <8 x double> %2085, %2092
  %2094 = fadd <8 x double> %2093, splat (double 0x408451671D164BD4)
  %2095 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2093, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2096 = fmul <8 x double> %2095, splat (double -4.000000e+00)
  %2097 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2094, <8 x double> %2094, <8 x double> %2096)
  %2098 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2097)
  %2099 = fsub <8 x double> %2094, %2098
  %2100 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2099, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2101 = select <8 x i1> %2061, <8 x double> %2067, <8 x double> %2100
  %2102 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2101, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2103 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2101, <8 x double> %2102, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2104 = load i64, ptr %149, align 64, !tbaa !16, !noalias !86
  %2105 = icmp sgt i64 %2104, 0
  br i1 %2105, label %2106, label %2293

2106:                                             ; preds = %2066
  %2107 = fdiv <8 x double> splat (double 1.000000e+00), %2103
  %2108 = fadd <8 x double> %2101, splat (double 1.000000e-09)
  br label %2109

2109:                                             ; preds = %2106, %2219
  %2110 = phi i64 [ 0, %2106 ], [ %2290, %2219 ]
  %2111 = phi <8 x double> [ zeroinitializer, %2106 ], [ %2289, %2219 ]
  %2112 = phi <8 x double> [ zeroinitializer, %2106 ], [ %2288, %2219 ]
  %2113 = load ptr, ptr %150, align 8, !tbaa !27, !noalias !86
  %2114 = getelementptr inbounds nuw %struct.Piece, ptr %2113, i64 %2110
  %2115 = getelementptr inbounds nuw i8, ptr %2114, i64 5824
  %2116 = load <8 x double>, ptr %2115, align 64, !tbaa !25, !noalias !86
  %2117 = getelementptr inbounds nuw i8, ptr %2114, i64 5888
  %2118 = load <8 x double>, ptr %2117, align 64, !tbaa !25, !noalias !86
  %2119 = getelementptr inbounds nuw i8, ptr %2114, i64 7296
  %2120 = load <8 x double>, ptr %2119, align 64, !tbaa !25, !noalias !86
  %2121 = fcmp ule <8 x double> %2120, splat (double 1.000000e+00)
  %2122 = fmul <8 x double> %2101, %2118
  %2123 = fcmp ogt <8 x double> %2116, %2122
  %2124 = and <8 x i1> %2121, %2123
  %2125 = fneg <8 x double> %2118
  %2126 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2125, <8 x double> %2101, <8 x double> %2116)
  %2127 = fmul <8 x double> %2107, %2126
  %2128 = select <8 x i1> %2124, <8 x double> %2127, <8 x double> zeroinitializer
  %2129 = fmul <8 x double> %2107, %2125
  %2130 = fdiv <8 x double> %2116, %2118
  %2131 = select <8 x i1> %2124, <8 x double> %2101, <8 x double> %2130
  %2132 = getelementptr inbounds nuw i8, ptr %2114, i64 7488
  %2133 = load <8 x i64>, ptr %2132, align 64, !tbaa !25, !noalias !86
  %2134 = getelementptr inbounds nuw i8, ptr %2114, i64 2240
  %2135 = load <8 x double>, ptr %2134, align 64, !tbaa !25, !noalias !86
  %2136 = fcmp ule <8 x double> %2135, zeroinitializer
  %2137 = xor <8 x i1> %2121, splat (i1 true)
  %2138 = select <8 x i1> %2137, <8 x i1> splat (i1 true), <8 x i1> %2136
  %2139 = getelementptr inbounds nuw i8, ptr %2114, i64 5952
  %2140 = load <8 x double>, ptr %2139, align 64, !tbaa !25, !noalias !86
  %2141 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2125, <8 x double> %2140, <8 x double> %2116)
  %2142 = fcmp ogt <8 x double> %2141, zeroinitializer
  %2143 = select <8 x i1> %2142, <8 x double> %2141, <8 x double> zeroinitializer
  %2144 = fmul <8 x double> %2107, %2143
  %2145 = icmp eq <8 x i64> %2133, zeroinitializer
  %2146 = select <8 x i1> %2138, <8 x i1> splat (i1 true), <8 x i1> %2145
  %2147 = select <8 x i1> %2146, <8 x double> %2128, <8 x double> %2144
  %2148 = select <8 x i1> %2146, <8 x double> %2131, <8 x double> %2140
  %2149 = select <8 x i1> %2146, <8 x i1> %2124, <8 x i1> zeroinitializer
  %2150 = select <8 x i1> %2149, <8 x double> %2129, <8 x double> zeroinitializer
  %2151 = load i64, ptr %140, align 8, !tbaa !20, !noalias !89
  %2152 = sitofp i64 %2151 to double
  %2153 = insertelement <8 x double> poison, double %2152, i64 0
  %2154 = shufflevector <8 x double> %2153, <8 x double> poison, <8 x i32> zeroinitializer
  %2155 = icmp sgt i64 %2151, 0
  br i1 %2155, label %2156, label %2219

2156:                                             ; preds = %2109
  %2157 = getelementptr inbounds nuw i8, ptr %2114, i64 7608
  %2158 = load ptr, ptr %2157, align 8, !tbaa !75, !noalias !89
  %2159 = getelementptr inbounds nuw i8, ptr %2114, i64 7616
  %2160 = load ptr, ptr %2159, align 64, !tbaa !76, !noalias !89
  %2161 = getelementptr inbounds nuw i8, ptr %2114, i64 7552
  %2162 = load i64, ptr %2161, align 64, !tbaa !30, !noalias !89
  %2163 = getelementptr inbounds nuw i8, ptr %2114, i64 7632
  %2164 = getelementptr inbounds nuw i8, ptr %2114, i64 7624
  %2165 = getelementptr inbounds nuw i8, ptr %2114, i64 7640
  br label %2166

2166:                                             ; preds = %2156, %2201
  %2167 = phi <8 x i64> [ splat (i64 -1), %2156 ], [ %2181, %2201 ]
  %2168 = phi i64 [ %2151, %2156 ], [ %2172, %2201 ]
  %2169 = phi <8 x double> [ %2154, %2156 ], [ %2217, %2201 ]
  %2170 = phi <8 x double> [ zeroinitializer, %2156 ], [ %2213, %2201 ]
  %2171 = phi <8 x double> [ zeroinitializer, %2156 ], [ %2211, %2201 ]
  %2172 = add nsw i64 %2168, -1
  %2173 = getelementptr inbounds nuw <8 x double>, ptr %2158, i64 %2172
  %2174 = load <8 x double>, ptr %2173, align 64, !tbaa !25, !noalias !89
  %2175 = getelementptr inbounds nuw <8 x double>, ptr %2160, i64 %2172
  %2176 = load <8 x double>, ptr %2175, align 64, !tbaa !25, !noalias !89
  %2177 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2176, <8 x double> %2101, <8 x double> %2174)
  %2178 = fcmp ogt <8 x double> %2177, %2108
  %2179 = select <8 x i1> %2178, <8 x i64> %2167, <8 x i64> zeroinitializer
  %2180 = icmp sgt i64 %2168, %2162
  %2181 = select i1 %2180, <8 x i64> %2179, <8 x i64> zeroinitializer
  %2182 = icmp slt i64 %2168, %2151
  br i1 %2182, label %2183, label %2196

2183:                                             ; preds = %2166
  %2184 = load ptr, ptr %2163, align 16, !tbaa !73, !noalias !89
  %2185 = getelementptr inbounds nuw <8 x double>, ptr %2184, i64 %2168
  %2186 = load <8 x double>, ptr %2185, align 64, !tbaa !25, !noalias !89
  %2187 = fsub <8 x double> %2177, %2101
  %2188 = fmul <8 x double> %2187, %2186
  %2189 = icmp eq <8 x i64> %2181, %2167
  %2190 = select <8 x i1> %2189, <8 x double> zeroinitializer, <8 x double> %2188
  %2191 = fadd <8 x double> %2171, %2190
  %2192 = fadd <8 x double> %2176, splat (double -1.000000e+00)
  %2193 = fmul <8 x double> %2192, %2186
  %2194 = select <8 x i1> %2189, <8 x double> zeroinitializer, <8 x double> %2193
  %2195 = fadd <8 x double> %2170, %2194
  br label %2196

2196:                                             ; preds = %2183, %2166
  %2197 = phi <8 x double> [ %2191, %2183 ], [ %2171, %2166 ]
  %2198 = phi <8 x double> [ %2195, %2183 ], [ %2170, %2166 ]
  %2199 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2181)
  %2200 = icmp eq i64 %2199, 0
  br i1 %2200, label %2219, label %2201

2201:                                             ; preds = %2196
  %2202 = load ptr, ptr %2164, align 8, !tbaa !72, !noalias !89
  %2203 = getelementptr inbounds nuw <8 x double>, ptr %2202, i64 %2172
  %2204 = load <8 x double>, ptr %2203, align 64, !tbaa !25, !noalias !89
  %2205 = load ptr, ptr %2165, align 8, !tbaa !74, !noalias !89
  %2206 = getelementptr inbounds nuw <8 x double>, ptr %2205, i64 %2172
  %2207 = load <8 x double>, ptr %2206, align 64, !tbaa !25, !noalias !89
  %2208 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2207, <8 x double> %2101, <8 x double> %2204)
  %2209 = icmp eq <8 x i64> %2181, zeroinitializer
  %2210 = select <8 x i1> %2209, <8 x double> zeroinitializer, <8 x double> %2208
  %2211 = fadd <8 x double> %2197, %2210
  %2212 = select <8 x i1> %2209, <8 x double> zeroinitializer, <8 x double> %2207
  %2213 = fadd <8 x double> %2198, %2212
  %2214 = uitofp nneg i64 %2172 to double
  %2215 = insertelement <8 x double> poison, double %2214, i64 0
  %2216 = shufflevector <8 x double> %2215, <8 x double> poison, <8 x i32> zeroinitializer
  %2217 = select <8 x i1> %2209, <8 x double> %2169, <8 x double> %2216
  %2218 = icmp samesign ugt i64 %2168, 1
  br i1 %2218, label %2166, label %2219, !llvm.loop !92

2219:                                             ; preds = %2201, %2196, %2109
  %2220 = phi <8 x double> [ %2154, %2109 ], [ %2169, %2196 ], [ %2217, %2201 ]
  %2221 = phi <8 x double> [ zeroinitializer, %2109 ], [ %2197, %2196 ], [ %2211, %2201 ]
  %2222 = phi <8 x double> [ zeroinitializer, %2109 ], [ %2198, %2196 ], [ %2213, %2201 ]
  %2223 = getelementptr inbounds nuw i8, ptr %2114, i64 6080
  %2224 = load <8 x double>, ptr %2223, align 64, !tbaa !25, !noalias !86
  %2225 = getelementptr inbounds nuw i8, ptr %2114, i64 5504
  %2226 = load <8 x double>, ptr %2225, align 64, !tbaa !25, !noalias !86
  %2227 = getelementptr inbounds nuw i8, ptr %2114, i64 7040
  %2228 = load <8 x double>, ptr %2227, align 64, !tbaa !25, !noalias !86
  %2229 = fneg <8 x double> %2228
  %2230 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2224, <8 x double> %2226, <8 x double> %2229)
  %2231 = getelementptr inbounds nuw i8, ptr %2114, i64 6976
  %2232 = load <8 x double>, ptr %2231, align 64, !tbaa !25, !noalias !86
  %2233 = fadd <8 x double> %2224, %2232
  %2234 = getelementptr inbounds nuw i8, ptr %2114, i64 7360
  %2235 = load <8 x i64>, ptr %2234, align 64, !tbaa !25, !noalias !86
  %2236 = getelementptr inbounds nuw i8, ptr %2114, i64 7712
  %2237 = load ptr, ptr %2236, align 32, !tbaa !80, !noalias !86
  %2238 = load <8 x double>, ptr %2237, align 64, !tbaa !25, !noalias !86
  %2239 = fmul <8 x double> %2224, %2238
  %2240 = icmp eq <8 x i64> %2235, zeroinitializer
  %2241 = select <8 x i1> %2240, <8 x double> %2230, <8 x double> %2239
  %2242 = getelementptr inbounds nuw i8, ptr %2114, i64 7720
  %2243 = load ptr, ptr %2242, align 8, !tbaa !81, !noalias !86
  %2244 = load <8 x double>, ptr %2243, align 64, !tbaa !25, !noalias !86
  %2245 = fsub <8 x double> splat (double 1.000000e+00), %2244
  %2246 = fmul <8 x double> %2224, %2245
  %2247 = select <8 x i1> %2240, <8 x double> %2233, <8 x double> %2246
  %2248 = fneg <8 x double> %2247
  %2249 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2248, <8 x double> %2101, <8 x double> %2241)
  %2250 = fcmp olt <8 x double> %2220, %2154
  %2251 = and <8 x i1> %2121, %2250
  %2252 = fcmp ogt <8 x double> %2221, zeroinitializer
  %2253 = fcmp oge <8 x double> %2249, zeroinitializer
  %2254 = and <8 x i1> %2252, %2253
  %2255 = and <8 x i1> %2251, %2254
  %2256 = sext <8 x i1> %2255 to <8 x i64>
  %2257 = xor <8 x i64> %2256, splat (i64 -1)
  %2258 = fadd <8 x double> %2221, %2249
  %2259 = fcmp ogt <8 x double> %2258, zeroinitializer
  %2260 = select <8 x i1> %2259, <8 x i1> %2251, <8 x i1> zeroinitializer
  %2261 = select <8 x i1> %2260, <8 x i64> %2257, <8 x i64> zeroinitializer
  %2262 = or <8 x i64> %2261, %2256
  %2263 = fmul <8 x double> %2107, %2249
  %2264 = select <8 x i1> %2255, <8 x double> %2263, <8 x double> zeroinitializer
  %2265 = icmp eq <8 x i64> %2262, zeroinitializer
  %2266 = select <8 x i1> %2265, <8 x double> %2147, <8 x double> %2264
  %2267 = select <8 x i1> %2265, <8 x double> %2148, <8 x double> %2101
  %2268 = fsub <8 x double> %2222, %2247
  %2269 = fmul <8 x double> %2107, %2268
  %2270 = select <8 x i1> %2265, <8 x double> %2150, <8 x double> %2269
  %2271 = getelementptr inbounds nuw i8, ptr %2114, i64 5632
  store <8 x double> %2266, ptr %2271, align 64, !tbaa !25, !noalias !86
  %2272 = getelementptr inbounds nuw i8, ptr %2114, i64 5568
  store <8 x double> %2267, ptr %2272, align 64, !tbaa !25, !noalias !86
  %2273 = fmul <8 x double> %2107, %2221
  %2274 = fmul <8 x double> %2107, %2258
  %2275 = icmp eq <8 x i64> %2261, zeroinitializer
  %2276 = select <8 x i1> %2275, <8 x double> zeroinitializer, <8 x double> %2274
  %2277 = select <8 x i1> %2255, <8 x double> %2273, <8 x double> %2276
  %2278 = getelementptr inbounds nuw i8, ptr %2114, i64 5696
  store <8 x double> %2277, ptr %2278, align 64, !tbaa !25, !noalias !86
  %2279 = load i64, ptr %140, align 8, !tbaa !20, !noalias !86
  %2280 = sitofp i64 %2279 to double
  %2281 = insertelement <8 x double> poison, double %2280, i64 0
  %2282 = shufflevector <8 x double> %2281, <8 x double> poison, <8 x i32> zeroinitializer
  %2283 = select <8 x i1> %2265, <8 x double> %2282, <8 x double> %2220
  %2284 = getelementptr inbounds nuw i8, ptr %2114, i64 5760
  store <8 x double> %2283, ptr %2284, align 64, !tbaa !25, !noalias !86
  %2285 = getelementptr inbounds nuw i8, ptr %2114, i64 128
  %2286 = load <8 x double>, ptr %2285, align 64, !tbaa !25, !noalias !86
  %2287 = fadd <8 x double> %2266, %2277
  %2288 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2286, <8 x double> %2287, <8 x double> %2112)
  %2289 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2286, <8 x double> %2270, <8 x double> %2111)
  %2290 = add nuw nsw i64 %2110, 1
  %2291 = load i64, ptr %149, align 64, !tbaa !16, !noalias !86
  %2292 = icmp slt i64 %2290, %2291
  br i1 %2292, label %2109, label %2293, !llvm.loop !93

2293:                                             ; preds = %2219, %2066
  %2294 = phi <8 x double> [ zeroinitializer, %2066 ], [ %2288, %2219 ]
  %2295 = phi <8 x double> [ zeroinitializer, %2066 ], [ %2289, %2219 ]
  %2296 = fsub <8 x double> %2072, %2036
  %2297 = fcmp ogt <8 x double> %2296, zeroinitializer
  %2298 = select <8 x i1> %2297, <8 x double> %2296, <8 x double> zeroinitializer
  %2299 = fadd <8 x double> %2101, splat (double 2.731500e+02)
  %2300 = fdiv <8 x double> %2298, splat (double 4.615260e+02)
  %2301 = fadd <8 x double> %2063, %2300
  %2302 = load <8 x double>, ptr %198, align 64, !tbaa !25
  %2303 = fdiv <8 x double> %2301, %2302
  %2304 = fmul <8 x double> %2302, %2303
  %2305 = fdiv <8 x double> %2072, %2304
  %2306 = load <8 x double>, ptr %186, align 64, !tbaa !25, !noalias !94
  %2307 = fsub <8 x double> %2072, %2306
  %2308 = load <8 x double>, ptr %199, align 64, !tbaa !25, !noalias !94
  %2309 = fsub <8 x double> %2307, %2308
  %2310 = load <8 x double>, ptr %200, align 64, !tbaa !25, !noalias !94
  %2311 = load <8 x double>, ptr %185, align 64, !tbaa !25, !noalias !94
  %2312 = fcmp une <8 x double> %2311, splat (double 2.000000e+00)
  %2313 = load <8 x double>, ptr %201, align 64, !tbaa !25, !noalias !94
  %2314 = select <8 x i1> %2312, <8 x double> zeroinitializer, <8 x double> %2313
  %2315 = fadd <8 x double> %2310, %2314
  %2316 = fcmp ule <8 x double> %2307, zeroinitializer
  %2317 = fcmp ule <8 x double> %2315, zeroinitializer
  %2318 = or <8 x i1> %2316, %2317
  %2319 = fmul <8 x double> %2303, splat (double 2.000000e+00)
  %2320 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2319)
  %2321 = fmul <8 x double> %2320, %2315
  %2322 = fadd <8 x double> %2307, splat (double 2.000000e+02)
  %2323 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2322)
  %2324 = select <8 x i1> %2316, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2323
  %2325 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2307, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2326 = fmul <8 x double> %2325, %2321
  %2327 = fmul <8 x double> %2324, %2324
  %2328 = fmul <8 x double> %2324, %2327
  %2329 = fdiv <8 x double> %2326, %2328
  %2330 = fmul <8 x double> %2307, %2321
  %2331 = fdiv <8 x double> %2330, %2324
  %2332 = select <8 x i1> %2318, <8 x double> zeroinitializer, <8 x double> %2331
  %2333 = select <8 x i1> %2318, <8 x double> zeroinitializer, <8 x double> %2329
  %2334 = fcmp ule <8 x double> %2309, zeroinitializer
  %2335 = load <8 x double>, ptr %202, align 64, !tbaa !25, !noalias !94
  %2336 = fmul <8 x double> %2309, %2335
  %2337 = select <8 x i1> %2334, <8 x double> zeroinitializer, <8 x double> %2336
  %2338 = fadd <8 x double> %2337, %2332
  %2339 = select <8 x i1> %2334, <8 x double> zeroinitializer, <8 x double> %2335
  %2340 = fadd <8 x double> %2339, %2333
  %2341 = load <8 x double>, ptr %203, align 64, !tbaa !25
  %2342 = fsub <8 x double> %2306, %2072
  %2343 = fcmp ule <8 x double> %2342, zeroinitializer
  %2344 = fcmp ule <8 x double> %2341, zeroinitializer
  %2345 = or <8 x i1> %2343, %2344
  %2346 = fmul <8 x double> %2065, %2341
  %2347 = fadd <8 x double> %2342, splat (double 2.000000e+02)
  %2348 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2347)
  %2349 = select <8 x i1> %2343, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2348
  %2350 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2342, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2351 = fmul <8 x double> %2350, %2346
  %2352 = fmul <8 x double> %2349, %2349
  %2353 = fmul <8 x double> %2349, %2352
  %2354 = fdiv <8 x double> %2351, %2353
  %2355 = fmul <8 x double> %2342, %2346
  %2356 = fdiv <8 x double> %2355, %2349
  %2357 = load <8 x double>, ptr %168, align 64, !tbaa !25, !noalias !97
  %2358 = load <8 x double>, ptr %188, align 64, !tbaa !25, !noalias !97
  %2359 = load <8 x double>, ptr %169, align 64, !tbaa !25, !noalias !97
  %2360 = load <8 x double>, ptr %189, align 64, !tbaa !25, !noalias !97
  %2361 = fmul <8 x double> %2359, %2360
  %2362 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2357, <8 x double> %2358, <8 x double> %2361)
  %2363 = load <8 x double>, ptr %192, align 64, !tbaa !25, !noalias !97
  %2364 = load <8 x double>, ptr %167, align 64, !tbaa !25, !noalias !97
  %2365 = load <8 x double>, ptr %190, align 64, !tbaa !25, !noalias !97
  %2366 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2363, <8 x double> %2364, <8 x double> %2365)
  %2367 = load <8 x double>, ptr %191, align 64, !tbaa !25, !noalias !97
  %2368 = fneg <8 x double> %2362
  %2369 = fmul <8 x double> %2363, %2368
  %2370 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2365, <8 x double> %2367, <8 x double> %2369)
  %2371 = fdiv <8 x double> %2370, %2366
  %2372 = fcmp ogt <8 x double> %2298, splat (double 2.000000e+03)
  %2373 = select <8 x i1> %2372, <8 x double> %2298, <8 x double> splat (double 2.000000e+03)
  %2374 = fmul <8 x double> %2373, splat (double 0x3EB0C6F7A0B5ED8D)
  %2375 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2374)
  %2376 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2375)
  %2377 = fmul <8 x double> %2376, %2376
  %2378 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2376, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2377)
  %2379 = fadd <8 x double> %2378, splat (double 0x402DD4891DBECC6B)
  %2380 = fmul <8 x double> %2376, splat (double 0x40C77A698FD9BCCA)
  %2381 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2377, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2380)
  %2382 = fadd <8 x double> %2381, splat (double 0xC0B2D7440748F0B3)
  %2383 = fmul <8 x double> %2376, splat (double 0xC148A99584203885)
  %2384 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2377, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2383)
  %2385 = fadd <8 x double> %2384, splat (double 0x4118B9E59F2691E5)
  %2386 = fmul <8 x double> %2385, splat (double 2.000000e+00)
  %2387 = fneg <8 x double> %2382
  %2388 = fmul <8 x double> %2379, splat (double 4.000000e+00)
  %2389 = fneg <8 x double> %2385
  %2390 = fmul <8 x double> %2388, %2389
  %2391 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2382, <8 x double> %2382, <8 x double> %2390)
  %2392 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2391)
  %2393 = fsub <8 x double> %2387, %2392
  %2394 = fdiv <8 x double> %2386, %2393
  %2395 = fadd <8 x double> %2394, splat (double 0x408451671D164BD4)
  %2396 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2394, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2397 = fmul <8 x double> %2396, splat (double -4.000000e+00)
  %2398 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2395, <8 x double> %2395, <8 x double> %2397)
  %2399 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2398)
  %2400 = fsub <8 x double> %2395, %2399
  %2401 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2400, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2402 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2401, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2403 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2401, <8 x double> %2402, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2404 = fadd <8 x double> %2401, splat (double 2.731500e+02)
  %2405 = fcmp ule <8 x double> %2401, %2371
  %2406 = load <8 x double>, ptr %204, align 64, !tbaa !25, !noalias !97
  %2407 = fmul <8 x double> %2366, %2406
  %2408 = fadd <8 x double> %2366, %2406
  %2409 = fdiv <8 x double> %2407, %2408
  %2410 = fdiv <8 x double> %2409, %2403
  %2411 = fmul <8 x double> %2404, splat (double 4.615260e+02)
  %2412 = fmul <8 x double> %2373, %2403
  %2413 = fmul <8 x double> %2401, %2406
  %2414 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2371, <8 x double> %2366, <8 x double> %2413)
  %2415 = fdiv <8 x double> %2414, %2408
  %2416 = select <8 x i1> %2405, <8 x double> %2371, <8 x double> %2415
  store <8 x double> %2416, ptr %194, align 64, !tbaa !25, !noalias !97
  %2417 = fsub <8 x double> %2401, %2371
  %2418 = fmul <8 x double> %2417, %2410
  %2419 = select <8 x i1> %2405, <8 x double> zeroinitializer, <8 x double> %2418
  %2420 = fmul <8 x double> %2299, splat (double 4.615260e+02)
  %2421 = fmul <8 x double> %2299, %2420
  %2422 = fmul <8 x double> %2072, %2103
  %2423 = fdiv <8 x double> %2421, %2422
  %2424 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2364, <8 x double> %2072, <8 x double> %2047)
  %2425 = fsub <8 x double> %2294, %2419
  %2426 = fmul <8 x double> %2425, splat (double -4.615260e+02)
  %2427 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2050, <8 x double> %2424, <8 x double> %2426)
  %2428 = fmul <8 x double> %2356, splat (double -2.870530e+02)
  %2429 = select <8 x i1> %2345, <8 x double> splat (double -0.000000e+00), <8 x double> %2428
  %2430 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2305, <8 x double> %2338, <8 x double> %2429)
  %2431 = fadd <8 x double> %2430, %2427
  %2432 = fneg <8 x double> %2404
  %2433 = fmul <8 x double> %2411, %2432
  %2434 = fdiv <8 x double> %2433, %2412
  %2435 = fmul <8 x double> %2434, %2410
  %2436 = select <8 x i1> %2405, <8 x double> splat (double -0.000000e+00), <8 x double> %2435
  %2437 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2295, <8 x double> %2423, <8 x double> %2436)
  %2438 = fmul <8 x double> %2437, splat (double -4.615260e+02)
  %2439 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2050, <8 x double> %2364, <8 x double> %2438)
  %2440 = fmul <8 x double> %2354, splat (double 2.870530e+02)
  %2441 = select <8 x i1> %2345, <8 x double> zeroinitializer, <8 x double> %2440
  %2442 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2305, <8 x double> %2340, <8 x double> %2441)
  %2443 = fadd <8 x double> %2442, %2439
  %2444 = fcmp ule <8 x double> %2431, zeroinitializer
  %2445 = fcmp olt <8 x double> %2069, %2072
  %2446 = select <8 x i1> %2444, <8 x i1> splat (i1 true), <8 x i1> %2445
  %2447 = select <8 x i1> %2446, <8 x double> %2069, <8 x double> %2072
  %2448 = fcmp ogt <8 x double> %2068, %2072
  %2449 = select <8 x i1> %2448, <8 x double> %2068, <8 x double> %2072
  %2450 = select <8 x i1> %2444, <8 x double> %2449, <8 x double> %2068
  %2451 = fdiv <8 x double> %2431, %2443
  %2452 = fsub <8 x double> %2072, %2451
  %2453 = fcmp uge <8 x double> %2450, %2452
  %2454 = fcmp uge <8 x double> %2452, %2447
  %2455 = or <8 x i1> %2453, %2454
  %2456 = fadd <8 x double> %2450, %2447
  %2457 = fmul <8 x double> %2456, splat (double 5.000000e-01)
  %2458 = select <8 x i1> %2455, <8 x double> %2457, <8 x double> %2452
  %2459 = fsub <8 x double> %2458, %2072
  %2460 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2459)
  %2461 = fcmp oge <8 x double> %2460, splat (double 2.000000e-01)
  %2462 = select <8 x i1> %2461, <8 x i64> %2070, <8 x i64> zeroinitializer
  %2463 = icmp eq <8 x i64> %2462, zeroinitializer
  %2464 = select <8 x i1> %2463, <8 x double> %2072, <8 x double> %2458
  %2465 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2462)
  %2466 = icmp ne i64 %2465, 0
  %2467 = add nuw nsw i32 %2071, 1
  %2468 = icmp samesign ult i32 %2071, 59
  %2469 = select i1 %2466, i1 %2468, i1 false
  br i1 %2469, label %2066, label %2470, !llvm.loop !100

2470:                                             ; preds = %2293
  %2471 = load <8 x double>, ptr %168, align 64, !tbaa !25
  %2472 = load <8 x double>, ptr %205, align 64, !tbaa !25
  %2473 = load <8 x double>, ptr %169, align 64, !tbaa !25
  %2474 = load <8 x double>, ptr %206, align 64, !tbaa !25
  %2475 = fmul <8 x double> %2473, %2474
  %2476 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2471, <8 x double> %2472, <8 x double> %2475)
  %2477 = load <8 x double>, ptr %203, align 64, !tbaa !25
  %2478 = load <8 x double>, ptr %186, align 64, !tbaa !25
  %2479 = fsub <8 x double> %2478, %2464
  %2480 = fcmp ule <8 x double> %2479, zeroinitializer
  %2481 = fcmp ule <8 x double> %2477, zeroinitializer
  %2482 = or <8 x i1> %2481, %2480
  %2483 = fmul <8 x double> %2065, %2477
  %2484 = fadd <8 x double> %2479, splat (double 2.000000e+02)
  %2485 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2484)
  %2486 = select <8 x i1> %2480, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2485
  %2487 = fmul <8 x double> %2483, %2479
  %2488 = fdiv <8 x double> %2487, %2486
  %2489 = fmul <8 x double> %2488, splat (double 2.870530e+02)
  %2490 = select <8 x i1> %2482, <8 x double> zeroinitializer, <8 x double> %2489
  %2491 = fdiv <8 x double> %2490, %2050
  %2492 = fsub <8 x double> %2491, %2476
  %2493 = load <8 x double>, ptr %167, align 64, !tbaa !25
  %2494 = load <8 x double>, ptr %197, align 64, !tbaa !25
  %2495 = fmul <8 x double> %2303, %2494
  %2496 = fdiv <8 x double> %2338, %2495
  %2497 = fadd <8 x double> %2493, %2496
  %2498 = fdiv <8 x double> %2492, %2497
  %2499 = fcmp ogt <8 x double> %2498, zeroinitializer
  %2500 = select <8 x i1> %2499, <8 x double> %2498, <8 x double> zeroinitializer
  %2501 = fcmp olt <8 x double> %2500, %2464
  %2502 = select <8 x i1> %2501, <8 x double> %2500, <8 x double> %2464
  %2503 = load <8 x double>, ptr %193, align 64, !tbaa !25
  %2504 = select <8 x i1> %2061, <8 x double> %2503, <8 x double> %2502
  store <8 x double> %2504, ptr %193, align 64, !tbaa !25
  %2505 = select <8 x i1> %2061, <8 x double> %2038, <8 x double> %2416
  store <8 x double> %2505, ptr %194, align 64, !tbaa !25
  store <8 x double> %2464, ptr %187, align 64, !tbaa !25
  store <8 x double> %2101, ptr %207, align 64, !tbaa !25
  %2506 = load i64, ptr %149, align 64, !tbaa !16
  br label %2676

2507:                                             ; preds = %2017
  store <8 x double> %2019, ptr %207, align 64, !tbaa !25
  %2508 = icmp sgt i64 %1781, 0
  br i1 %2508, label %2509, label %2679

2509:                                             ; preds = %2507
  %2510 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2019, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2511 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2019, <8 x double> %2510, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2512 = fdiv <8 x double> splat (double 1.000000e+00), %2511
  %2513 = fadd <8 x double> %2019, splat (double 1.000000e-09)
  br label %2514

2514:                                             ; preds = %2509, %2611
  %2515 = phi i64 [ 0, %2509 ], [ %2673, %2611 ]
  %2516 = load ptr, ptr %150, align 8, !tbaa !27, !noalias !101
  %2517 = getelementptr inbounds nuw %struct.Piece, ptr %2516, i64 %2515
  %2518 = getelementptr inbounds nuw i8, ptr %2517, i64 5824
  %2519 = load <8 x double>, ptr %2518, align 64, !tbaa !25, !noalias !101
  %2520 = getelementptr inbounds nuw i8, ptr %2517, i64 5888
  %2521 = load <8 x double>, ptr %2520, align 64, !tbaa !25, !noalias !101
  %2522 = getelementptr inbounds nuw i8, ptr %2517, i64 7296
  %2523 = load <8 x double>, ptr %2522, align 64, !tbaa !25, !noalias !101
  %2524 = fcmp ule <8 x double> %2523, splat (double 1.000000e+00)
  %2525 = fmul <8 x double> %2019, %2521
  %2526 = fcmp ogt <8 x double> %2519, %2525
  %2527 = and <8 x i1> %2524, %2526
  %2528 = fneg <8 x double> %2521
  %2529 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2528, <8 x double> %2019, <8 x double> %2519)
  %2530 = fmul <8 x double> %2512, %2529
  %2531 = select <8 x i1> %2527, <8 x double> %2530, <8 x double> zeroinitializer
  %2532 = fdiv <8 x double> %2519, %2521
  %2533 = select <8 x i1> %2527, <8 x double> %2019, <8 x double> %2532
  %2534 = getelementptr inbounds nuw i8, ptr %2517, i64 7488
  %2535 = load <8 x i64>, ptr %2534, align 64, !tbaa !25, !noalias !101
  %2536 = getelementptr inbounds nuw i8, ptr %2517, i64 2240
  %2537 = load <8 x double>, ptr %2536, align 64, !tbaa !25, !noalias !101
  %2538 = fcmp ule <8 x double> %2537, zeroinitializer
  %2539 = xor <8 x i1> %2524, splat (i1 true)
  %2540 = select <8 x i1> %2539, <8 x i1> splat (i1 true), <8 x i1> %2538
  %2541 = getelementptr inbounds nuw i8, ptr %2517, i64 5952
  %2542 = load <8 x double>, ptr %2541, align 64, !tbaa !25, !noalias !101
  %2543 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2528, <8 x double> %2542, <8 x double> %2519)
  %2544 = fcmp ogt <8 x double> %2543, zeroinitializer
  %2545 = select <8 x i1> %2544, <8 x double> %2543, <8 x double> zeroinitializer
  %2546 = fmul <8 x double> %2512, %2545
  %2547 = icmp eq <8 x i64> %2535, zeroinitializer
  %2548 = select <8 x i1> %2540, <8 x i1> splat (i1 true), <8 x i1> %2547
  %2549 = select <8 x i1> %2548, <8 x double> %2531, <8 x double> %2546
  %2550 = select <8 x i1> %2548, <8 x double> %2533, <8 x double> %2542
  %2551 = load i64, ptr %140, align 8, !tbaa !20, !noalias !104
  %2552 = sitofp i64 %2551 to double
  %2553 = insertelement <8 x double> poison, double %2552, i64 0
  %2554 = shufflevector <8 x double> %2553, <8 x double> poison, <8 x i32> zeroinitializer
  %2555 = icmp sgt i64 %2551, 0
  br i1 %2555, label %2556, label %2611

2556:                                             ; preds = %2514
  %2557 = getelementptr inbounds nuw i8, ptr %2517, i64 7608
  %2558 = load ptr, ptr %2557, align 8, !tbaa !75, !noalias !104
  %2559 = getelementptr inbounds nuw i8, ptr %2517, i64 7616
  %2560 = load ptr, ptr %2559, align 64, !tbaa !76, !noalias !104
  %2561 = getelementptr inbounds nuw i8, ptr %2517, i64 7552
  %2562 = load i64, ptr %2561, align 64, !tbaa !30, !noalias !104
  %2563 = getelementptr inbounds nuw i8, ptr %2517, i64 7632
  %2564 = getelementptr inbounds nuw i8, ptr %2517, i64 7624
  %2565 = getelementptr inbounds nuw i8, ptr %2517, i64 7640
  br label %2566

2566:                                             ; preds = %2556, %2595
  %2567 = phi <8 x i64> [ splat (i64 -1), %2556 ], [ %2580, %2595 ]
  %2568 = phi i64 [ %2551, %2556 ], [ %2571, %2595 ]
  %2569 = phi <8 x double> [ %2554, %2556 ], [ %2609, %2595 ]
  %2570 = phi <8 x double> [ zeroinitializer, %2556 ], [ %2605, %2595 ]
  %2571 = add nsw i64 %2568, -1
  %2572 = getelementptr inbounds nuw <8 x double>, ptr %2558, i64 %2571
  %2573 = load <8 x double>, ptr %2572, align 64, !tbaa !25, !noalias !104
  %2574 = getelementptr inbounds nuw <8 x double>, ptr %2560, i64 %2571
  %2575 = load <8 x double>, ptr %2574, align 64, !tbaa !25, !noalias !104
  %2576 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2575, <8 x double> %2019, <8 x double> %2573)
  %2577 = fcmp ogt <8 x double> %2576, %2513
  %2578 = select <8 x i1> %2577, <8 x i64> %2567, <8 x i64> zeroinitializer
  %2579 = icmp sgt i64 %2568, %2562
  %2580 = select i1 %2579, <8 x i64> %2578, <8 x i64> zeroinitializer
  %2581 = icmp slt i64 %2568, %2551
  br i1 %2581, label %2582, label %2591

2582:                                             ; preds = %2566
  %2583 = load ptr, ptr %2563, align 16, !tbaa !73, !noalias !104
  %2584 = getelementptr inbounds nuw <8 x double>, ptr %2583, i64 %2568
  %2585 = load <8 x double>, ptr %2584, align 64, !tbaa !25, !noalias !104
  %2586 = fsub <8 x double> %2576, %2019
  %2587 = fmul <8 x double> %2586, %2585
  %2588 = icmp eq <8 x i64> %2580, %2567
  %2589 = select <8 x i1> %2588, <8 x double> zeroinitializer, <8 x double> %2587
  %2590 = fadd <8 x double> %2570, %2589
  br label %2591

2591:                                             ; preds = %2582, %2566
  %2592 = phi <8 x double> [ %2590, %2582 ], [ %2570, %2566 ]
  %2593 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2580)
  %2594 = icmp eq i64 %2593, 0
  br i1 %2594, label %2611, label %2595

2595:                                             ; preds = %2591
  %2596 = load ptr, ptr %2564, align 8, !tbaa !72, !noalias !104
  %2597 = getelementptr inbounds nuw <8 x double>, ptr %2596, i64 %2571
  %2598 = load <8 x double>, ptr %2597, align 64, !tbaa !25, !noalias !104
  %2599 = load ptr, ptr %2565, align 8, !tbaa !74, !noalias !104
  %2600 = getelementptr inbounds nuw <8 x double>, ptr %2599, i64 %2571
  %2601 = load <8 x double>, ptr %2600, align 64, !tbaa !25, !noalias !104
  %2602 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2601, <8 x double> %2019, <8 x double> %2598)
  %2603 = icmp eq <8 x i64> %2580, zeroinitializer
  %2604 = select <8 x i1> %2603, <8 x double> zeroinitializer, <8 x double> %2602
  %2605 = fadd <8 x double> %2592, %2604
  %2606 = uitofp nneg i64 %2571 to double
  %2607 = insertelement <8 x double> poison, double %2606, i64 0
  %2608 = shufflevector <8 x double> %2607, <8 x double> poison, <8 x i32> zeroinitializer
  %2609 = select <8 x i1> %2603, <8 x double> %2569, <8 x double> %2608
  %2610 = icmp samesign ugt i64 %2568, 1
  br i1 %2610, label %2566, label %2611, !llvm.loop !92

2611:                                             ; preds = %2595, %2591, %2514
  %2612 = phi <8 x double> [ %2554, %2514 ], [ %2569, %2591 ], [ %2609, %2595 ]
  %2613 = phi <8 x double> [ zeroinitializer, %2514 ], [ %2592, %2591 ], [ %2605, %2595 ]
  %2614 = getelementptr inbounds nuw i8, ptr %2517, i64 6080
  %2615 = load <8 x double>, ptr %2614, align 64, !tbaa !25, !noalias !101
  %2616 = getelementptr inbounds nuw i8, ptr %2517, i64 5504
  %2617 = load <8 x double>, ptr %2616, align 64, !tbaa !25, !noalias !101
  %2618 = getelementptr inbounds nuw i8, ptr %2517, i64 7040
  %2619 = load <8 x double>, ptr %2618, align 64, !tbaa !25, !noalias !101
  %2620 = fneg <8 x double> %2619
  %2621 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2615, <8 x double> %2617, <8 x double> %2620)
  %2622 = getelementptr inbounds nuw i8, ptr %2517, i64 6976
  %2623 = load <8 x double>, ptr %2622, align 64, !tbaa !25, !noalias !101
  %2624 = fadd <8 x double> %2615, %2623
  %2625 = getelementptr inbounds nuw i8, ptr %2517, i64 7360
  %2626 = load <8 x i64>, ptr %2625, align 64, !tbaa !25, !noalias !101
  %2627 = getelementptr inbounds nuw i8, ptr %2517, i64 7712
  %2628 = load ptr, ptr %2627, align 32, !tbaa !80, !noalias !101
  %2629 = load <8 x double>, ptr %2628, align 64, !tbaa !25, !noalias !101
  %2630 = fmul <8 x double> %2615, %2629
  %2631 = icmp eq <8 x i64> %2626, zeroinitializer
  %2632 = select <8 x i1> %2631, <8 x double> %2621, <8 x double> %2630
  %2633 = getelementptr inbounds nuw i8, ptr %2517, i64 7720
  %2634 = load ptr, ptr %2633, align 8, !tbaa !81, !noalias !101
  %2635 = load <8 x double>, ptr %2634, align 64, !tbaa !25, !noalias !101
  %2636 = fsub <8 x double> splat (double 1.000000e+00), %2635
  %2637 = fmul <8 x double> %2615, %2636
  %2638 = select <8 x i1> %2631, <8 x double> %2624, <8 x double> %2637
  %2639 = fneg <8 x double> %2638
  %2640 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2639, <8 x double> %2019, <8 x double> %2632)
  %2641 = fcmp olt <8 x double> %2612, %2554
  %2642 = and <8 x i1> %2524, %2641
  %2643 = fcmp ogt <8 x double> %2613, zeroinitializer
  %2644 = fcmp oge <8 x double> %2640, zeroinitializer
  %2645 = and <8 x i1> %2643, %2644
  %2646 = and <8 x i1> %2642, %2645
  %2647 = sext <8 x i1> %2646 to <8 x i64>
  %2648 = xor <8 x i64> %2647, splat (i64 -1)
  %2649 = fadd <8 x double> %2613, %2640
  %2650 = fcmp ogt <8 x double> %2649, zeroinitializer
  %2651 = select <8 x i1> %2650, <8 x i1> %2642, <8 x i1> zeroinitializer
  %2652 = select <8 x i1> %2651, <8 x i64> %2648, <8 x i64> zeroinitializer
  %2653 = or <8 x i64> %2652, %2647
  %2654 = fmul <8 x double> %2512, %2640
  %2655 = select <8 x i1> %2646, <8 x double> %2654, <8 x double> zeroinitializer
  %2656 = icmp eq <8 x i64> %2653, zeroinitializer
  %2657 = select <8 x i1> %2656, <8 x double> %2549, <8 x double> %2655
  %2658 = select <8 x i1> %2656, <8 x double> %2550, <8 x double> %2019
  %2659 = getelementptr inbounds nuw i8, ptr %2517, i64 5632
  store <8 x double> %2657, ptr %2659, align 64, !tbaa !25, !noalias !101
  %2660 = getelementptr inbounds nuw i8, ptr %2517, i64 5568
  store <8 x double> %2658, ptr %2660, align 64, !tbaa !25, !noalias !101
  %2661 = fmul <8 x double> %2512, %2613
  %2662 = fmul <8 x double> %2512, %2649
  %2663 = icmp eq <8 x i64> %2652, zeroinitializer
  %2664 = select <8 x i1> %2663, <8 x double> zeroinitializer, <8 x double> %2662
  %2665 = select <8 x i1> %2646, <8 x double> %2661, <8 x double> %2664
  %2666 = getelementptr inbounds nuw i8, ptr %2517, i64 5696
  store <8 x double> %2665, ptr %2666, align 64, !tbaa !25, !noalias !101
  %2667 = load i64, ptr %140, align 8, !tbaa !20, !noalias !101
  %2668 = sitofp i64 %2667 to double
  %2669 = insertelement <8 x double> poison, double %2668, i64 0
  %2670 = shufflevector <8 x double> %2669, <8 x double> poison, <8 x i32> zeroinitializer
  %2671 = select <8 x i1> %2656, <8 x double> %2670, <8 x double> %2612
  %2672 = getelementptr inbounds nuw i8, ptr %2517, i64 5760
  store <8 x double> %2671, ptr %2672, align 64, !tbaa !25, !noalias !101
  %2673 = add nuw nsw i64 %2515, 1
  %2674 = load i64, ptr %149, align 64, !tbaa !16, !noalias !101
  %2675 = icmp slt i64 %2673, %2674
  br i1 %2675, label %2514, label %2676, !llvm.loop !93

2676:                                             ; preds = %2611, %2470
  %2677 = phi i64 [ %2506, %2470 ], [ %2674, %2611 ]
  %2678 = icmp sgt i64 %2677, 0
  br i1 %2678, label %2797, label %2679

2679:                                             ; preds = %2676, %2507
  %2680 = phi i64 [ %2677, %2676 ], [ %1781, %2507 ]
  %2681 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %2682 = load <8 x double>, ptr %208, align 64, !tbaa !25
  br label %2711

2683:                                             ; preds = %2870
  %2684 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %2685 = load <8 x double>, ptr %208, align 64, !tbaa !25
  %2686 = icmp sgt i64 %2894, 0
  br i1 %2686, label %2687, label %2711

2687:                                             ; preds = %2683
  %2688 = load ptr, ptr %150, align 8, !tbaa !27
  br label %2689

2689:                                             ; preds = %2687, %2689
  %2690 = phi <8 x double> [ zeroinitializer, %2687 ], [ %2703, %2689 ]
  %2691 = phi <8 x double> [ %2685, %2687 ], [ %2708, %2689 ]
  %2692 = phi i64 [ 0, %2687 ], [ %2709, %2689 ]
  %2693 = getelementptr inbounds nuw %struct.Piece, ptr %2688, i64 %2692
  %2694 = getelementptr inbounds nuw i8, ptr %2693, i64 7488
  %2695 = load <8 x i64>, ptr %2694, align 64, !tbaa !25
  %2696 = getelementptr inbounds nuw i8, ptr %2693, i64 128
  %2697 = load <8 x double>, ptr %2696, align 64, !tbaa !25
  %2698 = getelementptr inbounds nuw i8, ptr %2693, i64 6336
  %2699 = load <8 x double>, ptr %2698, align 64, !tbaa !25
  %2700 = fmul <8 x double> %2697, %2699
  %2701 = icmp eq <8 x i64> %2695, zeroinitializer
  %2702 = select <8 x i1> %2701, <8 x double> %2700, <8 x double> zeroinitializer
  %2703 = fadd <8 x double> %2690, %2702
  %2704 = getelementptr inbounds nuw i8, ptr %2693, i64 6208
  %2705 = load <8 x double>, ptr %2704, align 64, !tbaa !25
  %2706 = fmul <8 x double> %2697, %2705
  %2707 = select <8 x i1> %2701, <8 x double> %2706, <8 x double> zeroinitializer
  %2708 = fadd <8 x double> %2691, %2707
  %2709 = add nuw nsw i64 %2692, 1
  %2710 = icmp eq i64 %2709, %2894
  br i1 %2710, label %2711, label %2689, !llvm.loop !107

2711:                                             ; preds = %2689, %2679, %2683
  %2712 = phi i1 [ false, %2683 ], [ false, %2679 ], [ true, %2689 ]
  %2713 = phi <8 x double> [ %2685, %2683 ], [ %2682, %2679 ], [ %2685, %2689 ]
  %2714 = phi <8 x double> [ %2684, %2683 ], [ %2681, %2679 ], [ %2684, %2689 ]
  %2715 = phi i64 [ %2894, %2683 ], [ %2680, %2679 ], [ %2894, %2689 ]
  %2716 = phi <8 x double> [ %2685, %2683 ], [ %2682, %2679 ], [ %2708, %2689 ]
  %2717 = phi <8 x double> [ zeroinitializer, %2683 ], [ zeroinitializer, %2679 ], [ %2703, %2689 ]
  %2718 = load <8 x double>, ptr %191, align 64, !tbaa !25
  %2719 = fsub <8 x double> %2714, %2718
  %2720 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2713, <8 x double> %2719, <8 x double> %2717)
  %2721 = load <8 x double>, ptr %209, align 64, !tbaa !25
  %2722 = fcmp ule <8 x double> %2721, zeroinitializer
  %2723 = load <8 x double>, ptr %210, align 64, !tbaa !25
  %2724 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2721, <8 x double> splat (double 5.000000e-01), <8 x double> %2723)
  %2725 = fsub <8 x double> %2724, %2714
  %2726 = fcmp ogt <8 x double> %2721, splat (double 1.000000e-30)
  %2727 = select <8 x i1> %2726, <8 x double> %2721, <8 x double> splat (double 1.000000e-30)
  %2728 = fdiv <8 x double> %2725, %2727
  %2729 = fcmp ogt <8 x double> %2728, zeroinitializer
  %2730 = select <8 x i1> %2729, <8 x double> %2728, <8 x double> zeroinitializer
  %2731 = fcmp olt <8 x double> %2730, splat (double 1.000000e+00)
  %2732 = select <8 x i1> %2731, <8 x double> %2730, <8 x double> splat (double 1.000000e+00)
  %2733 = load <8 x double>, ptr %211, align 64, !tbaa !25
  %2734 = load <8 x i64>, ptr %212, align 64, !tbaa !25
  %2735 = icmp eq <8 x i64> %2734, zeroinitializer
  %2736 = select <8 x i1> %2735, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %2737 = select <8 x i1> %2722, <8 x double> %2736, <8 x double> %2732
  %2738 = fmul <8 x double> %2733, %2737
  %2739 = fcmp ule <8 x double> %2738, zeroinitializer
  %2740 = fcmp uge <8 x double> %2738, %2733
  %2741 = or <8 x i1> %2739, %2740
  %2742 = or <8 x i1> %2722, %2741
  %2743 = fdiv <8 x double> %2733, %2727
  %2744 = select <8 x i1> %2742, <8 x double> zeroinitializer, <8 x double> %2743
  %2745 = fadd <8 x double> %2716, %2744
  %2746 = load <8 x double>, ptr %167, align 64, !tbaa !25
  %2747 = load <8 x double>, ptr %1, align 64, !tbaa !25
  %2748 = fmul <8 x double> %2714, %2747
  %2749 = load <8 x double>, ptr %213, align 64, !tbaa !25
  %2750 = load <8 x double>, ptr %214, align 64, !tbaa !25
  %2751 = fmul <8 x double> %2750, splat (double 5.000000e-01)
  %2752 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2751, <8 x double> %2714, <8 x double> %2749)
  %2753 = load <8 x double>, ptr %215, align 64, !tbaa !25
  %2754 = fmul <8 x double> %2714, %2753
  %2755 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2748, <8 x double> %2752, <8 x double> %2754)
  %2756 = load <8 x double>, ptr %168, align 64, !tbaa !25
  %2757 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %2758 = fmul <8 x double> %2747, %2757
  %2759 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2751, <8 x double> %2757, <8 x double> %2749)
  %2760 = fmul <8 x double> %2753, %2757
  %2761 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2758, <8 x double> %2759, <8 x double> %2760)
  %2762 = fmul <8 x double> %2756, %2761
  %2763 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2746, <8 x double> %2755, <8 x double> %2762)
  %2764 = load <8 x double>, ptr %169, align 64, !tbaa !25
  %2765 = load <8 x double>, ptr %172, align 64, !tbaa !25
  %2766 = fmul <8 x double> %2747, %2765
  %2767 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2751, <8 x double> %2765, <8 x double> %2749)
  %2768 = fmul <8 x double> %2753, %2765
  %2769 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2766, <8 x double> %2767, <8 x double> %2768)
  %2770 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2764, <8 x double> %2769, <8 x double> %2763)
  %2771 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2750, <8 x double> %2714, <8 x double> %2749)
  %2772 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2747, <8 x double> %2771, <8 x double> %2753)
  %2773 = load <8 x double>, ptr %173, align 64, !tbaa !25
  %2774 = fcmp une <8 x double> %2773, zeroinitializer
  %2775 = fadd <8 x double> %2720, %2770
  %2776 = fsub <8 x double> %2775, %2738
  %2777 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2746, <8 x double> %2772, <8 x double> %2745)
  %2778 = fdiv <8 x double> %2776, %2777
  %2779 = fsub <8 x double> %2714, %2778
  %2780 = select <8 x i1> %2774, <8 x double> %2714, <8 x double> %2779
  store <8 x double> %2780, ptr %170, align 64, !tbaa !25
  %2781 = load <8 x double>, ptr %216, align 64, !tbaa !25
  %2782 = fneg <8 x double> %2756
  %2783 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2782, <8 x double> %2781, <8 x double> %2738)
  %2784 = load <8 x double>, ptr %217, align 64, !tbaa !25
  %2785 = fneg <8 x double> %2764
  %2786 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2785, <8 x double> %2784, <8 x double> %2783)
  %2787 = fdiv <8 x double> %2786, %2746
  %2788 = load <8 x double>, ptr %218, align 64, !tbaa !25
  %2789 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2782, <8 x double> %2788, <8 x double> %2720)
  %2790 = load <8 x double>, ptr %219, align 64, !tbaa !25
  %2791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2785, <8 x double> %2790, <8 x double> %2789)
  %2792 = fdiv <8 x double> %2791, %2746
  %2793 = load <8 x double>, ptr %220, align 64, !tbaa !25
  %2794 = select <8 x i1> %2774, <8 x double> %2793, <8 x double> %2787
  store <8 x double> %2794, ptr %220, align 64, !tbaa !25
  %2795 = load <8 x double>, ptr %221, align 64, !tbaa !25
  %2796 = select <8 x i1> %2774, <8 x double> %2795, <8 x double> %2792
  store <8 x double> %2796, ptr %221, align 64, !tbaa !25
  br i1 %2712, label %2896, label %3159

2797:                                             ; preds = %2676, %2870
  %2798 = phi i64 [ %2893, %2870 ], [ 0, %2676 ]
  %2799 = load ptr, ptr %150, align 8, !tbaa !27
  %2800 = getelementptr inbounds nuw %struct.Piece, ptr %2799, i64 %2798
  %2801 = getelementptr inbounds nuw i8, ptr %2800, i64 5568
  %2802 = load <8 x double>, ptr %2801, align 64, !tbaa !25
  %2803 = load i64, ptr %140, align 8, !tbaa !20
  %2804 = icmp sgt i64 %2803, 0
  br i1 %2804, label %2805, label %2810

2805:                                             ; preds = %2797
  %2806 = getelementptr inbounds nuw i8, ptr %2800, i64 5760
  %2807 = getelementptr inbounds nuw i8, ptr %2800, i64 7608
  %2808 = getelementptr inbounds nuw i8, ptr %2800, i64 7616
  %2809 = getelementptr inbounds nuw i8, ptr %2800, i64 7560
  br label %2825

2810:                                             ; preds = %2825, %2797
  %2811 = getelementptr inbounds nuw i8, ptr %2800, i64 7360
  %2812 = load <8 x i64>, ptr %2811, align 64, !tbaa !25
  %2813 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2812)
  %2814 = icmp eq i64 %2813, 0
  %2815 = load i64, ptr %141, align 16, !tbaa !21
  %2816 = icmp sgt i64 %2815, 0
  br i1 %2814, label %2822, label %2817

2817:                                             ; preds = %2810
  br i1 %2816, label %2818, label %2870

2818:                                             ; preds = %2817
  %2819 = getelementptr inbounds nuw i8, ptr %2800, i64 7712
  %2820 = getelementptr inbounds nuw i8, ptr %2800, i64 7720
  %2821 = getelementptr inbounds nuw i8, ptr %2800, i64 7680
  br label %2845

2822:                                             ; preds = %2810
  br i1 %2816, label %2823, label %2870

2823:                                             ; preds = %2822
  %2824 = getelementptr inbounds nuw i8, ptr %2800, i64 7680
  br label %2863

2825:                                             ; preds = %2805, %2825
  %2826 = phi <8 x double> [ %2802, %2805 ], [ %2841, %2825 ]
  %2827 = phi i64 [ %2803, %2805 ], [ %2828, %2825 ]
  %2828 = add nsw i64 %2827, -1
  %2829 = load <8 x double>, ptr %2806, align 64, !tbaa !25
  %2830 = uitofp nneg i64 %2828 to double
  %2831 = insertelement <8 x double> poison, double %2830, i64 0
  %2832 = shufflevector <8 x double> %2831, <8 x double> poison, <8 x i32> zeroinitializer
  %2833 = fcmp ugt <8 x double> %2829, %2832
  %2834 = load ptr, ptr %2807, align 8, !tbaa !75
  %2835 = getelementptr inbounds nuw <8 x double>, ptr %2834, i64 %2828
  %2836 = load <8 x double>, ptr %2835, align 64, !tbaa !25
  %2837 = load ptr, ptr %2808, align 64, !tbaa !76
  %2838 = getelementptr inbounds nuw <8 x double>, ptr %2837, i64 %2828
  %2839 = load <8 x double>, ptr %2838, align 64, !tbaa !25
  %2840 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2839, <8 x double> %2826, <8 x double> %2836)
  %2841 = select <8 x i1> %2833, <8 x double> %2840, <8 x double> %2802
  %2842 = load ptr, ptr %2809, align 8, !tbaa !58
  %2843 = getelementptr inbounds nuw <8 x double>, ptr %2842, i64 %2828
  store <8 x double> %2841, ptr %2843, align 64, !tbaa !25
  %2844 = icmp samesign ugt i64 %2827, 1
  br i1 %2844, label %2825, label %2810, !llvm.loop !108

2845:                                             ; preds = %2818, %2845
  %2846 = phi i64 [ 0, %2818 ], [ %2860, %2845 ]
  %2847 = phi <8 x double> [ %2802, %2818 ], [ %2857, %2845 ]
  %2848 = load <8 x i64>, ptr %2811, align 64, !tbaa !25
  %2849 = load ptr, ptr %2819, align 32, !tbaa !80
  %2850 = getelementptr inbounds nuw <8 x double>, ptr %2849, i64 %2846
  %2851 = load <8 x double>, ptr %2850, align 64, !tbaa !25
  %2852 = load ptr, ptr %2820, align 8, !tbaa !81
  %2853 = getelementptr inbounds nuw <8 x double>, ptr %2852, i64 %2846
  %2854 = load <8 x double>, ptr %2853, align 64, !tbaa !25
  %2855 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2854, <8 x double> %2847, <8 x double> %2851)
  %2856 = icmp eq <8 x i64> %2848, zeroinitializer
  %2857 = select <8 x i1> %2856, <8 x double> %2802, <8 x double> %2855
  %2858 = load ptr, ptr %2821, align 64, !tbaa !109
  %2859 = getelementptr inbounds nuw <8 x double>, ptr %2858, i64 %2846
  store <8 x double> %2857, ptr %2859, align 64, !tbaa !25
  %2860 = add nuw nsw i64 %2846, 1
  %2861 = load i64, ptr %141, align 16, !tbaa !21
  %2862 = icmp slt i64 %2860, %2861
  br i1 %2862, label %2845, label %2870, !llvm.loop !110

2863:                                             ; preds = %2823, %2863
  %2864 = phi i64 [ 0, %2823 ], [ %2867, %2863 ]
  %2865 = load ptr, ptr %2824, align 64, !tbaa !109
  %2866 = getelementptr inbounds nuw <8 x double>, ptr %2865, i64 %2864
  store <8 x double> %2802, ptr %2866, align 64, !tbaa !25
  %2867 = add nuw nsw i64 %2864, 1
  %2868 = load i64, ptr %141, align 16, !tbaa !21
  %2869 = icmp slt i64 %2867, %2868
  br i1 %2869, label %2863, label %2870, !llvm.loop !111

2870:                                             ; preds = %2845, %2863, %2817, %2822
  %2871 = phi <8 x double> [ %2802, %2822 ], [ %2802, %2817 ], [ %2802, %2863 ], [ %2857, %2845 ]
  %2872 = load <8 x i64>, ptr %2811, align 64, !tbaa !25
  %2873 = getelementptr inbounds nuw i8, ptr %2800, i64 6272
  %2874 = load <8 x double>, ptr %2873, align 64, !tbaa !25
  %2875 = icmp eq <8 x i64> %2872, zeroinitializer
  %2876 = select <8 x i1> %2875, <8 x double> zeroinitializer, <8 x double> %2874
  %2877 = fsub <8 x double> splat (double 1.000000e+00), %2876
  %2878 = getelementptr inbounds nuw i8, ptr %2800, i64 5504
  %2879 = load <8 x double>, ptr %2878, align 64, !tbaa !25
  %2880 = fmul <8 x double> %2876, %2879
  %2881 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2877, <8 x double> %2871, <8 x double> %2880)
  %2882 = getelementptr inbounds nuw i8, ptr %2800, i64 6464
  store <8 x double> %2881, ptr %2882, align 64, !tbaa !25
  %2883 = getelementptr inbounds nuw i8, ptr %2800, i64 6208
  %2884 = load <8 x double>, ptr %2883, align 64, !tbaa !25
  %2885 = fsub <8 x double> %2879, %2871
  %2886 = fmul <8 x double> %2885, %2884
  %2887 = getelementptr inbounds nuw i8, ptr %2800, i64 6336
  store <8 x double> %2886, ptr %2887, align 64, !tbaa !25
  %2888 = getelementptr inbounds nuw i8, ptr %2800, i64 3200
  %2889 = load <8 x double>, ptr %2888, align 64, !tbaa !25
  %2890 = fdiv <8 x double> %2886, %2889
  %2891 = fsub <8 x double> %2879, %2890
  %2892 = getelementptr inbounds nuw i8, ptr %2800, i64 6400
  store <8 x double> %2891, ptr %2892, align 64, !tbaa !25
  %2893 = add nuw nsw i64 %2798, 1
  %2894 = load i64, ptr %149, align 64, !tbaa !16
  %2895 = icmp slt i64 %2893, %2894
  br i1 %2895, label %2797, label %2683, !llvm.loop !112

2896:                                             ; preds = %2711, %3114
  %2897 = phi i64 [ %3156, %3114 ], [ 0, %2711 ]
  %2898 = phi <8 x double> [ %3155, %3114 ], [ zeroinitializer, %2711 ]
  %2899 = load ptr, ptr %150, align 8, !tbaa !27
  %2900 = getelementptr inbounds nuw %struct.Piece, ptr %2899, i64 %2897
  %2901 = getelementptr inbounds nuw i8, ptr %2900, i64 5632
  %2902 = load <8 x double>, ptr %2901, align 64, !tbaa !25
  %2903 = getelementptr inbounds nuw i8, ptr %2900, i64 5696
  %2904 = load <8 x double>, ptr %2903, align 64, !tbaa !25
  %2905 = fadd <8 x double> %2902, %2904
  %2906 = getelementptr inbounds nuw i8, ptr %2900, i64 5568
  %2907 = load <8 x double>, ptr %2906, align 64, !tbaa !25
  %2908 = load <8 x double>, ptr %207, align 64, !tbaa !25
  %2909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2908, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2910 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2908, <8 x double> %2909, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2911 = getelementptr inbounds nuw i8, ptr %2900, i64 5312
  %2912 = load <8 x double>, ptr %2911, align 64, !tbaa !25
  %2913 = getelementptr inbounds nuw i8, ptr %2900, i64 4032
  %2914 = load <8 x double>, ptr %2913, align 64, !tbaa !25
  %2915 = fneg <8 x double> %2912
  %2916 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2915, <8 x double> %2914, <8 x double> %2905)
  %2917 = getelementptr inbounds nuw i8, ptr %2900, i64 5376
  %2918 = load <8 x double>, ptr %2917, align 64, !tbaa !25
  %2919 = getelementptr inbounds nuw i8, ptr %2900, i64 4800
  %2920 = load <8 x double>, ptr %2919, align 64, !tbaa !25
  %2921 = fneg <8 x double> %2918
  %2922 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2921, <8 x double> %2920, <8 x double> %2916)
  %2923 = getelementptr inbounds nuw i8, ptr %2900, i64 5248
  %2924 = load <8 x double>, ptr %2923, align 64, !tbaa !25
  %2925 = fdiv <8 x double> %2922, %2924
  %2926 = getelementptr inbounds nuw i8, ptr %2900, i64 1600
  %2927 = load <8 x double>, ptr %2926, align 64, !tbaa !25
  %2928 = fsub <8 x double> %2927, %2925
  %2929 = getelementptr inbounds nuw i8, ptr %2900, i64 3904
  %2930 = load <8 x double>, ptr %2929, align 64, !tbaa !25
  %2931 = getelementptr inbounds nuw i8, ptr %2900, i64 7168
  %2932 = load <8 x double>, ptr %2931, align 64, !tbaa !25
  %2933 = fsub <8 x double> %2930, %2932
  %2934 = getelementptr inbounds nuw i8, ptr %2900, i64 6784
  %2935 = load <8 x double>, ptr %2934, align 64, !tbaa !25
  %2936 = getelementptr inbounds nuw i8, ptr %2900, i64 1280
  %2937 = load <8 x double>, ptr %2936, align 64, !tbaa !25
  %2938 = fmul <8 x double> %2935, %2937
  %2939 = getelementptr inbounds nuw i8, ptr %2900, i64 6464
  %2940 = load <8 x double>, ptr %2939, align 64, !tbaa !25
  %2941 = fsub <8 x double> %2940, %2907
  %2942 = fmul <8 x double> %2938, %2941
  %2943 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2910, <8 x double> %2905, <8 x double> %2942)
  %2944 = fsub <8 x double> %2928, %2933
  %2945 = getelementptr inbounds nuw i8, ptr %2900, i64 2944
  %2946 = getelementptr inbounds nuw i8, ptr %2900, i64 3072
  %2947 = load <8 x double>, ptr %2946, align 64, !tbaa !25
  %2948 = fsub <8 x double> %2944, %2947
  %2949 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2948)
  %2950 = getelementptr inbounds nuw i8, ptr %2900, i64 832
  %2951 = load <8 x double>, ptr %2950, align 64, !tbaa !25
  %2952 = fdiv <8 x double> %2949, %2951
  %2953 = getelementptr inbounds nuw i8, ptr %2900, i64 7360
  %2954 = load <8 x i64>, ptr %2953, align 64, !tbaa !25
  %2955 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2954)
  %2956 = icmp eq i64 %2955, 0
  br i1 %2956, label %3114, label %2957

2957:                                             ; preds = %2896
  %2958 = getelementptr inbounds nuw i8, ptr %2900, i64 3776
  %2959 = load <8 x double>, ptr %2958, align 64, !tbaa !25
  %2960 = fcmp ogt <8 x double> %2933, %2928
  %2961 = getelementptr inbounds nuw i8, ptr %2900, i64 7296
  %2962 = load <8 x double>, ptr %2961, align 64, !tbaa !25
  %2963 = fcmp oeq <8 x double> %2962, zeroinitializer
  %2964 = select <8 x i1> %2963, <8 x i1> %2960, <8 x i1> zeroinitializer
  %2965 = select <8 x i1> %2964, <8 x i64> %2954, <8 x i64> zeroinitializer
  %2966 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2965)
  %2967 = icmp eq i64 %2966, 0
  br i1 %2967, label %3038, label %2968

2968:                                             ; preds = %2957
  %2969 = fsub <8 x double> %2933, %2928
  %2970 = fdiv <8 x double> %2969, %2951
  %2971 = getelementptr inbounds nuw i8, ptr %2900, i64 7592
  %2972 = load ptr, ptr %2971, align 8, !tbaa !61
  %2973 = load i64, ptr %140, align 8, !tbaa !20
  %2974 = add nsw i64 %2973, -1
  %2975 = getelementptr inbounds <8 x double>, ptr %2972, i64 %2974
  %2976 = load <8 x double>, ptr %2975, align 64, !tbaa !25
  %2977 = icmp sgt i64 %2973, 1
  br i1 %2977, label %2978, label %3030

2978:                                             ; preds = %2968
  %2979 = getelementptr inbounds nuw i8, ptr %2900, i64 7552
  %2980 = load i64, ptr %2979, align 64, !tbaa !30
  %2981 = getelementptr inbounds nuw i8, ptr %2900, i64 4416
  %2982 = getelementptr inbounds nuw i8, ptr %2900, i64 1536
  %2983 = getelementptr inbounds nuw i8, ptr %2900, i64 7648
  br label %2984

2984:                                             ; preds = %2978, %3027
  %2985 = phi <8 x double> [ %2959, %2978 ], [ %3022, %3027 ]
  %2986 = phi i64 [ %2974, %2978 ], [ %3028, %3027 ]
  %2987 = phi <8 x double> [ %2976, %2978 ], [ %3010, %3027 ]
  %2988 = phi <8 x i64> [ %2965, %2978 ], [ %3014, %3027 ]
  %2989 = phi <8 x double> [ %2970, %2978 ], [ %3021, %3027 ]
  %2990 = icmp slt i64 %2986, %2980
  br i1 %2990, label %2991, label %2997

2991:                                             ; preds = %2984
  %2992 = load ptr, ptr %2983, align 32, !tbaa !71
  %2993 = getelementptr inbounds nuw <8 x double>, ptr %2992, i64 %2986
  %2994 = load <8 x double>, ptr %2993, align 64, !tbaa !25
  %2995 = load <8 x double>, ptr %2982, align 64, !tbaa !25
  %2996 = fmul <8 x double> %2994, %2995
  br label %3005

2997:                                             ; preds = %2984
  %2998 = load <8 x double>, ptr %2981, align 64, !tbaa !25
  %2999 = load <8 x double>, ptr %2982, align 64, !tbaa !25
  %3000 = load ptr, ptr %2983, align 32, !tbaa !71
  %3001 = getelementptr inbounds nuw <8 x double>, ptr %3000, i64 %2986
  %3002 = load <8 x double>, ptr %3001, align 64, !tbaa !25
  %3003 = fsub <8 x double> %2998, %2999
  %3004 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3002, <8 x double> %3003, <8 x double> %2999)
  br label %3005

3005:                                             ; preds = %2991, %2997
  %3006 = phi <8 x double> [ %2996, %2991 ], [ %3004, %2997 ]
  %3007 = getelementptr inbounds nuw <8 x double>, ptr %2972, i64 %2986
  %3008 = load <8 x double>, ptr %3007, align 64, !tbaa !25
  %3009 = icmp eq <8 x i64> %2988, zeroinitializer
  %3010 = select <8 x i1> %3009, <8 x double> %2987, <8 x double> %3008
  %3011 = fsub <8 x double> %2985, %3006
  %3012 = fmul <8 x double> %3011, %3010
  %3013 = fcmp olt <8 x double> %3012, %2989
  %3014 = select <8 x i1> %3013, <8 x i64> %2988, <8 x i64> zeroinitializer
  %3015 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3014)
  %3016 = icmp eq i64 %3015, 0
  br i1 %3016, label %3030, label %3017

3017:                                             ; preds = %3005
  %3018 = fneg <8 x double> %3010
  %3019 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3018, <8 x double> %3011, <8 x double> %2989)
  %3020 = icmp eq <8 x i64> %3014, zeroinitializer
  %3021 = select <8 x i1> %3020, <8 x double> %2989, <8 x double> %3019
  %3022 = select <8 x i1> %3020, <8 x double> %2985, <8 x double> %3006
  %3023 = icmp eq i64 %2986, 1
  br i1 %3023, label %3024, label %3027

3024:                                             ; preds = %3017
  %3025 = load <8 x double>, ptr %2972, align 64, !tbaa !25
  %3026 = select <8 x i1> %3020, <8 x double> %3010, <8 x double> %3025
  br label %3030

3027:                                             ; preds = %3017
  %3028 = add nsw i64 %2986, -1
  %3029 = icmp sgt i64 %2986, 1
  br i1 %3029, label %2984, label %3030, !llvm.loop !113

3030:                                             ; preds = %3027, %3005, %3024, %2968
  %3031 = phi <8 x double> [ %2970, %2968 ], [ %3021, %3024 ], [ %2989, %3005 ], [ %3021, %3027 ]
  %3032 = phi <8 x double> [ %2959, %2968 ], [ %3022, %3024 ], [ %2985, %3005 ], [ %3022, %3027 ]
  %3033 = phi <8 x double> [ %2976, %2968 ], [ %3026, %3024 ], [ %3010, %3005 ], [ %3010, %3027 ]
  %3034 = fdiv <8 x double> %3031, %3033
  %3035 = fsub <8 x double> %3032, %3034
  %3036 = icmp eq <8 x i64> %2965, zeroinitializer
  %3037 = select <8 x i1> %3036, <8 x double> %2959, <8 x double> %3035
  br label %3038

3038:                                             ; preds = %3030, %2957
  %3039 = phi <8 x double> [ %3037, %3030 ], [ %2959, %2957 ]
  %3040 = load <8 x double>, ptr %2945, align 64, !tbaa !25
  %3041 = getelementptr inbounds nuw i8, ptr %2900, i64 2560
  %3042 = load <8 x double>, ptr %3041, align 64, !tbaa !25
  %3043 = getelementptr inbounds nuw i8, ptr %2900, i64 2624
  %3044 = load <8 x double>, ptr %3043, align 64, !tbaa !25
  %3045 = getelementptr inbounds nuw i8, ptr %2900, i64 2688
  %3046 = load <8 x double>, ptr %3045, align 64, !tbaa !25
  %3047 = getelementptr inbounds nuw i8, ptr %2900, i64 2752
  %3048 = load <8 x double>, ptr %3047, align 64, !tbaa !25
  %3049 = load <8 x double>, ptr %2900, align 64, !tbaa !25
  %3050 = fmul <8 x double> %3049, splat (double 1.000000e-09)
  br label %3051

3051:                                             ; preds = %3038, %3051
  %3052 = phi <8 x i64> [ splat (i64 -1), %3038 ], [ %3069, %3051 ]
  %3053 = phi i32 [ 0, %3038 ], [ %3070, %3051 ]
  %3054 = phi <8 x double> [ %3040, %3038 ], [ %3066, %3051 ]
  %3055 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> %3048, <8 x double> %3046)
  %3056 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> %3055, <8 x double> %3044)
  %3057 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> %3056, <8 x double> %3042)
  %3058 = fsub <8 x double> %3057, %3039
  %3059 = fmul <8 x double> %3054, splat (double 3.000000e+00)
  %3060 = fmul <8 x double> %3059, %3048
  %3061 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3046, <8 x double> splat (double 2.000000e+00), <8 x double> %3060)
  %3062 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3054, <8 x double> %3061, <8 x double> %3044)
  %3063 = fdiv <8 x double> %3058, %3062
  %3064 = fsub <8 x double> %3054, %3063
  %3065 = icmp eq <8 x i64> %3052, zeroinitializer
  %3066 = select <8 x i1> %3065, <8 x double> %3054, <8 x double> %3064
  %3067 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3063)
  %3068 = fcmp oge <8 x double> %3067, %3050
  %3069 = select <8 x i1> %3068, <8 x i64> %3052, <8 x i64> zeroinitializer
  %3070 = add nuw nsw i32 %3053, 1
  %3071 = icmp samesign ult i32 %3053, 3
  %3072 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3069)
  %3073 = icmp ne i64 %3072, 0
  %3074 = select i1 %3071, i1 %3073, i1 false
  br i1 %3074, label %3051, label %3075, !llvm.loop !114

3075:                                             ; preds = %3051
  %3076 = fmul <8 x double> %3049, splat (double 2.800000e-01)
  %3077 = fcmp ogt <8 x double> %3066, %3076
  %3078 = select <8 x i1> %3077, <8 x double> %3066, <8 x double> %3076
  %3079 = fcmp olt <8 x double> %3078, %3049
  %3080 = select <8 x i1> %3079, <8 x double> %3078, <8 x double> %3049
  %3081 = fcmp olt <8 x double> %2933, %2928
  %3082 = icmp eq <8 x i64> %2954, zeroinitializer
  %3083 = select <8 x i1> %3082, <8 x i1> splat (i1 true), <8 x i1> %3081
  %3084 = select <8 x i1> %3083, <8 x double> %2933, <8 x double> %2928
  %3085 = fsub <8 x double> %3080, %3040
  %3086 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3085)
  %3087 = select <8 x i1> %3082, <8 x double> %2952, <8 x double> %3086
  %3088 = select <8 x i1> %3082, <8 x double> %3040, <8 x double> %3080
  store <8 x double> %3088, ptr %2945, align 64, !tbaa !25
  %3089 = getelementptr inbounds nuw i8, ptr %2900, i64 3008
  %3090 = load <8 x double>, ptr %3089, align 64, !tbaa !25
  %3091 = select <8 x i1> %3082, <8 x double> %3090, <8 x double> %3039
  store <8 x double> %3091, ptr %3089, align 64, !tbaa !25
  %3092 = getelementptr inbounds nuw i8, ptr %2900, i64 6720
  %3093 = load <8 x double>, ptr %3092, align 64, !tbaa !25
  %3094 = fmul <8 x double> %3093, splat (double 2.000000e+00)
  %3095 = getelementptr inbounds nuw i8, ptr %2900, i64 384
  %3096 = load <8 x double>, ptr %3095, align 64, !tbaa !25
  %3097 = getelementptr inbounds nuw i8, ptr %2900, i64 448
  %3098 = load <8 x double>, ptr %3097, align 64, !tbaa !25
  %3099 = getelementptr inbounds nuw i8, ptr %2900, i64 512
  %3100 = load <8 x double>, ptr %3099, align 64, !tbaa !25
  %3101 = fmul <8 x double> %2907, %3100
  %3102 = fmul <8 x double> %3101, splat (double 0x3FD5555555555555)
  %3103 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3098, <8 x double> splat (double 5.000000e-01), <8 x double> %3102)
  %3104 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2907, <8 x double> %3103, <8 x double> %3096)
  %3105 = fmul <8 x double> %2907, %3104
  %3106 = getelementptr inbounds nuw i8, ptr %2900, i64 768
  %3107 = load <8 x double>, ptr %3106, align 64, !tbaa !25
  %3108 = fneg <8 x double> %3107
  %3109 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3108, <8 x double> %2907, <8 x double> %3105)
  %3110 = fmul <8 x double> %3094, %3109
  %3111 = fsub <8 x double> %2943, %3110
  %3112 = select <8 x i1> %3082, <8 x double> %2943, <8 x double> %3111
  %3113 = fsub <8 x double> %2928, %3084
  br label %3114

3114:                                             ; preds = %2896, %3075
  %3115 = phi <8 x double> [ %2944, %2896 ], [ %3113, %3075 ]
  %3116 = phi <8 x double> [ %2952, %2896 ], [ %3087, %3075 ]
  %3117 = phi <8 x double> [ %2933, %2896 ], [ %3084, %3075 ]
  %3118 = phi <8 x double> [ %2943, %2896 ], [ %3112, %3075 ]
  store <8 x double> %3115, ptr %2946, align 64, !tbaa !25
  %3119 = getelementptr inbounds nuw i8, ptr %2900, i64 3136
  store <8 x double> %3117, ptr %3119, align 64, !tbaa !25
  %3120 = getelementptr inbounds nuw i8, ptr %2900, i64 3264
  store <8 x double> %2925, ptr %3120, align 64, !tbaa !25
  %3121 = getelementptr inbounds nuw i8, ptr %2900, i64 3456
  store <8 x double> %2902, ptr %3121, align 64, !tbaa !25
  %3122 = getelementptr inbounds nuw i8, ptr %2900, i64 3520
  store <8 x double> %2907, ptr %3122, align 64, !tbaa !25
  %3123 = getelementptr inbounds nuw i8, ptr %2900, i64 6976
  %3124 = load <8 x double>, ptr %3123, align 64, !tbaa !25
  %3125 = getelementptr inbounds nuw i8, ptr %2900, i64 7040
  %3126 = load <8 x double>, ptr %3125, align 64, !tbaa !25
  %3127 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3124, <8 x double> %2907, <8 x double> %3126)
  %3128 = getelementptr inbounds nuw i8, ptr %2900, i64 6336
  %3129 = load <8 x double>, ptr %3128, align 64, !tbaa !25
  %3130 = getelementptr inbounds nuw i8, ptr %2900, i64 4096
  %3131 = load <8 x double>, ptr %3130, align 64, !tbaa !25
  %3132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2915, <8 x double> %3131, <8 x double> %3129)
  %3133 = getelementptr inbounds nuw i8, ptr %2900, i64 4864
  %3134 = load <8 x double>, ptr %3133, align 64, !tbaa !25
  %3135 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2921, <8 x double> %3134, <8 x double> %3132)
  %3136 = fdiv <8 x double> %3135, %2924
  %3137 = getelementptr inbounds nuw i8, ptr %2900, i64 3328
  store <8 x double> %3136, ptr %3137, align 64, !tbaa !25
  %3138 = getelementptr inbounds nuw i8, ptr %2900, i64 4160
  %3139 = load <8 x double>, ptr %3138, align 64, !tbaa !25
  %3140 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2915, <8 x double> %3139, <8 x double> %3118)
  %3141 = getelementptr inbounds nuw i8, ptr %2900, i64 4928
  %3142 = load <8 x double>, ptr %3141, align 64, !tbaa !25
  %3143 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2921, <8 x double> %3142, <8 x double> %3140)
  %3144 = fdiv <8 x double> %3143, %2924
  %3145 = getelementptr inbounds nuw i8, ptr %2900, i64 3392
  store <8 x double> %3144, ptr %3145, align 64, !tbaa !25
  %3146 = getelementptr inbounds nuw i8, ptr %2900, i64 4352
  %3147 = load <8 x double>, ptr %3146, align 64, !tbaa !25
  %3148 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2915, <8 x double> %3147, <8 x double> %3127)
  %3149 = getelementptr inbounds nuw i8, ptr %2900, i64 5120
  %3150 = load <8 x double>, ptr %3149, align 64, !tbaa !25
  %3151 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2921, <8 x double> %3150, <8 x double> %3148)
  %3152 = fdiv <8 x double> %3151, %2924
  %3153 = getelementptr inbounds nuw i8, ptr %2900, i64 3584
  store <8 x double> %3152, ptr %3153, align 64, !tbaa !25
  %3154 = fcmp ogt <8 x double> %2898, %3116
  %3155 = select <8 x i1> %3154, <8 x double> %2898, <8 x double> %3116
  %3156 = add nuw nsw i64 %2897, 1
  %3157 = load i64, ptr %149, align 64, !tbaa !16
  %3158 = icmp slt i64 %3156, %3157
  br i1 %3158, label %2896, label %3159, !llvm.loop !115

3159:                                             ; preds = %3114, %2711
  %3160 = phi i64 [ %2715, %2711 ], [ %3157, %3114 ]
  %3161 = phi <8 x double> [ zeroinitializer, %2711 ], [ %3155, %3114 ]
  %3162 = load <8 x double>, ptr %178, align 64, !tbaa !25
  %3163 = fadd <8 x double> %3162, splat (double 1.000000e+00)
  store <8 x double> %3163, ptr %178, align 64, !tbaa !25
  %3164 = load <8 x i64>, ptr %131, align 64, !tbaa !25
  %3165 = load <8 x double>, ptr %222, align 64, !tbaa !25
  %3166 = fcmp olt <8 x double> %3161, %3165
  %3167 = load i64, ptr %223, align 8, !tbaa !23
  %3168 = sitofp i64 %3167 to double
  %3169 = insertelement <8 x double> poison, double %3168, i64 0
  %3170 = shufflevector <8 x double> %3169, <8 x double> poison, <8 x i32> zeroinitializer
  %3171 = fcmp oge <8 x double> %3163, %3170
  %3172 = or <8 x i1> %3166, %3171
  %3173 = select <8 x i1> %3172, <8 x i64> %3164, <8 x i64> zeroinitializer
  store <8 x i64> %3173, ptr %154, align 64, !tbaa !25
  %3174 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3173)
  %3175 = icmp eq i64 %3174, 0
  br i1 %3175, label %543, label %3176, !llvm.loop !54

3176:                                             ; preds = %3159
  %3177 = icmp sgt i64 %3160, 0
  br i1 %3177, label %3178, label %3180

3178:                                             ; preds = %3176
  %3179 = icmp eq <8 x i64> %3173, zeroinitializer
  br label %3510

3180:                                             ; preds = %3558, %3176
  %3181 = phi i64 [ %3160, %3176 ], [ %3564, %3558 ]
  %3182 = load <8 x double>, ptr %224, align 64, !tbaa !25
  %3183 = fadd <8 x double> %3182, splat (double 1.000000e+00)
  %3184 = icmp eq <8 x i64> %3173, zeroinitializer
  %3185 = select <8 x i1> %3184, <8 x double> %3182, <8 x double> %3183
  store <8 x double> %3185, ptr %224, align 64, !tbaa !25
  %3186 = fcmp ogt <8 x double> %3185, splat (double 4.000000e+01)
  %3187 = select <8 x i1> %3186, <8 x i64> %3173, <8 x i64> zeroinitializer
  %3188 = xor <8 x i64> %3187, %3173
  %3189 = load <8 x double>, ptr %148, align 64, !tbaa !25
  %3190 = fadd <8 x double> %3189, splat (double 1.000000e+00)
  %3191 = icmp eq <8 x i64> %3187, zeroinitializer
  %3192 = select <8 x i1> %3191, <8 x double> %3189, <8 x double> %3190
  store <8 x double> %3192, ptr %148, align 64, !tbaa !25
  %3193 = load <8 x double>, ptr %207, align 64, !tbaa !25
  %3194 = load <8 x double>, ptr %225, align 64, !tbaa !25
  %3195 = fsub <8 x double> %3193, %3194
  %3196 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3195)
  %3197 = load <8 x double>, ptr %226, align 64, !tbaa !25
  %3198 = fmul <8 x double> %3197, splat (double 1.500000e+00)
  %3199 = fcmp ogt <8 x double> %3196, %3198
  %3200 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %3201 = fcmp ogt <8 x double> %3200, splat (double 2.000000e-03)
  %3202 = load <8 x double>, ptr %182, align 64, !tbaa !25
  %3203 = fcmp oeq <8 x double> %3202, zeroinitializer
  %3204 = and <8 x i1> %3199, %3203
  %3205 = and <8 x i1> %3201, %3204
  %3206 = fdiv <8 x double> %3197, %3196
  %3207 = select <8 x i1> %3205, <8 x i64> %3188, <8 x i64> zeroinitializer
  %3208 = load <8 x double>, ptr %163, align 64, !tbaa !25
  %3209 = icmp eq <8 x i64> %3207, zeroinitializer
  %3210 = select <8 x i1> %3209, <8 x double> %3208, <8 x double> zeroinitializer
  store <8 x double> %3210, ptr %163, align 64, !tbaa !25
  %3211 = fcmp ogt <8 x double> %3206, splat (double 5.000000e-02)
  %3212 = select <8 x i1> %3211, <8 x double> %3206, <8 x double> splat (double 5.000000e-02)
  %3213 = fcmp olt <8 x double> %3212, splat (double 0x3FEE666666666666)
  %3214 = select <8 x i1> %3213, <8 x double> %3212, <8 x double> splat (double 0x3FEE666666666666)
  %3215 = fmul <8 x double> %3200, %3214
  %3216 = fcmp ogt <8 x double> %3215, splat (double 0x3EB0C6F7A0B5ED8D)
  %3217 = select <8 x i1> %3216, <8 x double> %3215, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3218 = load <8 x double>, ptr %155, align 64, !tbaa !25
  %3219 = select <8 x i1> %3209, <8 x double> %3218, <8 x double> %3217
  store <8 x double> %3219, ptr %155, align 64, !tbaa !25
  %3220 = load <8 x double>, ptr %145, align 64, !tbaa !25
  %3221 = fadd <8 x double> %3220, splat (double 1.000000e+00)
  %3222 = select <8 x i1> %3209, <8 x double> %3220, <8 x double> %3221
  store <8 x double> %3222, ptr %145, align 64, !tbaa !25
  %3223 = xor <8 x i64> %3207, %3188
  %3224 = icmp sgt i64 %3181, 0
  br i1 %3224, label %3225, label %3367

3225:                                             ; preds = %3180
  %3226 = load ptr, ptr %150, align 8, !tbaa !27
  %3227 = fcmp ogt <8 x double> %3200, splat (double 0x3E7AD7F29ABCAF48)
  %3228 = fmul <8 x double> %3200, splat (double 3.000000e-01)
  %3229 = fcmp ogt <8 x double> %3228, splat (double 0x3EB0C6F7A0B5ED8D)
  %3230 = select <8 x i1> %3229, <8 x double> %3228, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3231 = fcmp ogt <8 x double> %3200, splat (double 1.000000e-05)
  br label %3235

3232:                                             ; preds = %3235
  %3233 = load ptr, ptr %150, align 8, !tbaa !27
  %3234 = fcmp ogt <8 x double> %3200, splat (double 1.000000e-04)
  br label %3295

3235:                                             ; preds = %3225, %3235
  %3236 = phi <8 x double> [ %3222, %3225 ], [ %3291, %3235 ]
  %3237 = phi <8 x double> [ %3219, %3225 ], [ %3289, %3235 ]
  %3238 = phi <8 x double> [ %3210, %3225 ], [ %3281, %3235 ]
  %3239 = phi i64 [ 0, %3225 ], [ %3293, %3235 ]
  %3240 = phi <8 x i64> [ %3223, %3225 ], [ %3292, %3235 ]
  %3241 = getelementptr inbounds nuw %struct.Piece, ptr %3226, i64 %3239
  %3242 = getelementptr inbounds nuw i8, ptr %3241, i64 3072
  %3243 = load <8 x double>, ptr %3242, align 64, !tbaa !25
  %3244 = getelementptr inbounds nuw i8, ptr %3241, i64 3840
  %3245 = load <8 x double>, ptr %3244, align 64, !tbaa !25
  %3246 = getelementptr inbounds nuw i8, ptr %3241, i64 7360
  %3247 = load <8 x i64>, ptr %3246, align 64, !tbaa !25
  %3248 = xor <8 x i64> %3247, splat (i64 -1)
  %3249 = getelementptr inbounds nuw i8, ptr %3241, i64 896
  %3250 = load <8 x double>, ptr %3249, align 64, !tbaa !25
  %3251 = fmul <8 x double> %3250, splat (double 1.000000e-04)
  %3252 = fcmp ogt <8 x double> %3251, splat (double 0x3E7AD7F29ABCAF48)
  %3253 = fneg <8 x double> %3251
  %3254 = select <8 x i1> %3252, <8 x double> %3253, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3255 = fcmp olt <8 x double> %3243, %3254
  %3256 = select <8 x i1> %3255, <8 x i64> %3248, <8 x i64> zeroinitializer
  %3257 = fcmp ole <8 x double> %3245, zeroinitializer
  %3258 = select <8 x i1> %3257, <8 x i64> %3256, <8 x i64> zeroinitializer
  %3259 = getelementptr inbounds nuw i8, ptr %3241, i64 832
  %3260 = load <8 x double>, ptr %3259, align 64, !tbaa !25
  %3261 = fmul <8 x double> %3260, splat (double -3.000000e-07)
  %3262 = fcmp olt <8 x double> %3243, %3261
  %3263 = select <8 x i1> %3227, <8 x i1> %3262, <8 x i1> zeroinitializer
  %3264 = select <8 x i1> %3263, <8 x i64> %3258, <8 x i64> zeroinitializer
  %3265 = and <8 x i64> %3264, %3240
  %3266 = icmp eq <8 x i64> %3265, zeroinitializer
  %3267 = select <8 x i1> %3266, <8 x double> %3238, <8 x double> zeroinitializer
  %3268 = select <8 x i1> %3266, <8 x double> %3237, <8 x double> %3230
  %3269 = fadd <8 x double> %3236, splat (double 1.000000e+00)
  %3270 = select <8 x i1> %3266, <8 x double> %3236, <8 x double> %3269
  %3271 = xor <8 x i64> %3265, %3240
  %3272 = xor <8 x i64> %3258, splat (i64 -1)
  %3273 = and <8 x i64> %3256, %3272
  %3274 = select <8 x i1> %3231, <8 x i64> %3273, <8 x i64> zeroinitializer
  %3275 = fsub <8 x double> %3245, %3243
  %3276 = fdiv <8 x double> %3245, %3275
  %3277 = fcmp ogt <8 x double> %3267, %3200
  %3278 = and <8 x i64> %3271, %3274
  %3279 = icmp eq <8 x i64> %3278, zeroinitializer
  %3280 = select <8 x i1> %3279, <8 x i1> splat (i1 true), <8 x i1> %3277
  %3281 = select <8 x i1> %3280, <8 x double> %3267, <8 x double> %3200
  store <8 x double> %3281, ptr %163, align 64, !tbaa !25
  %3282 = fcmp ogt <8 x double> %3276, splat (double 5.000000e-02)
  %3283 = select <8 x i1> %3282, <8 x double> %3276, <8 x double> splat (double 5.000000e-02)
  %3284 = fcmp olt <8 x double> %3283, splat (double 0x3FEE666666666666)
  %3285 = select <8 x i1> %3284, <8 x double> %3283, <8 x double> splat (double 0x3FEE666666666666)
  %3286 = fmul <8 x double> %3200, %3285
  %3287 = fcmp ogt <8 x double> %3286, splat (double 0x3EB0C6F7A0B5ED8D)
  %3288 = select <8 x i1> %3287, <8 x double> %3286, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3289 = select <8 x i1> %3279, <8 x double> %3268, <8 x double> %3288
  store <8 x double> %3289, ptr %155, align 64, !tbaa !25
  %3290 = fadd <8 x double> %3270, splat (double 1.000000e+00)
  %3291 = select <8 x i1> %3279, <8 x double> %3270, <8 x double> %3290
  store <8 x double> %3291, ptr %145, align 64, !tbaa !25
  %3292 = xor <8 x i64> %3278, %3271
  %3293 = add nuw nsw i64 %3239, 1
  %3294 = icmp eq i64 %3293, %3181
  br i1 %3294, label %3232, label %3235, !llvm.loop !116

3295:                                             ; preds = %3232, %3295
  %3296 = phi <8 x double> [ %3291, %3232 ], [ %3363, %3295 ]
  %3297 = phi <8 x double> [ %3289, %3232 ], [ %3361, %3295 ]
  %3298 = phi <8 x double> [ %3281, %3232 ], [ %3353, %3295 ]
  %3299 = phi i64 [ 0, %3232 ], [ %3365, %3295 ]
  %3300 = phi <8 x i64> [ %3292, %3232 ], [ %3364, %3295 ]
  %3301 = getelementptr inbounds nuw %struct.Piece, ptr %3233, i64 %3299
  %3302 = getelementptr inbounds nuw i8, ptr %3301, i64 3776
  %3303 = load <8 x double>, ptr %3302, align 64, !tbaa !25
  %3304 = getelementptr inbounds nuw i8, ptr %3301, i64 3008
  %3305 = load <8 x double>, ptr %3304, align 64, !tbaa !25
  %3306 = getelementptr inbounds nuw i8, ptr %3301, i64 7296
  %3307 = load <8 x double>, ptr %3306, align 64, !tbaa !25
  %3308 = fcmp oeq <8 x double> %3307, zeroinitializer
  %3309 = getelementptr inbounds nuw i8, ptr %3301, i64 1472
  %3310 = load <8 x double>, ptr %3309, align 64, !tbaa !25
  %3311 = fmul <8 x double> %3310, splat (double 0x3FEFF7CED916872B)
  %3312 = fcmp olt <8 x double> %3305, %3311
  %3313 = and <8 x i1> %3308, %3312
  %3314 = and <8 x i1> %3234, %3313
  %3315 = fsub <8 x double> %3303, %3310
  %3316 = fsub <8 x double> %3303, %3305
  %3317 = fdiv <8 x double> %3315, %3316
  %3318 = fcmp ogt <8 x double> %3298, %3200
  %3319 = select <8 x i1> %3314, <8 x i64> %3300, <8 x i64> zeroinitializer
  %3320 = icmp eq <8 x i64> %3319, zeroinitializer
  %3321 = select <8 x i1> %3320, <8 x i1> splat (i1 true), <8 x i1> %3318
  %3322 = select <8 x i1> %3321, <8 x double> %3298, <8 x double> %3200
  store <8 x double> %3322, ptr %163, align 64, !tbaa !25
  %3323 = fcmp ogt <8 x double> %3317, splat (double 5.000000e-02)
  %3324 = select <8 x i1> %3323, <8 x double> %3317, <8 x double> splat (double 5.000000e-02)
  %3325 = fcmp olt <8 x double> %3324, splat (double 0x3FEE666666666666)
  %3326 = select <8 x i1> %3325, <8 x double> %3324, <8 x double> splat (double 0x3FEE666666666666)
  %3327 = fmul <8 x double> %3200, %3326
  %3328 = fcmp ogt <8 x double> %3327, splat (double 0x3EB0C6F7A0B5ED8D)
  %3329 = select <8 x i1> %3328, <8 x double> %3327, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3330 = select <8 x i1> %3320, <8 x double> %3297, <8 x double> %3329
  store <8 x double> %3330, ptr %155, align 64, !tbaa !25
  %3331 = fadd <8 x double> %3296, splat (double 1.000000e+00)
  %3332 = select <8 x i1> %3320, <8 x double> %3296, <8 x double> %3331
  store <8 x double> %3332, ptr %145, align 64, !tbaa !25
  %3333 = xor <8 x i64> %3319, %3300
  %3334 = load <8 x double>, ptr %3306, align 64, !tbaa !25
  %3335 = fcmp oeq <8 x double> %3334, splat (double 1.000000e+00)
  %3336 = getelementptr inbounds nuw i8, ptr %3301, i64 3264
  %3337 = load <8 x double>, ptr %3336, align 64, !tbaa !25
  %3338 = getelementptr inbounds nuw i8, ptr %3301, i64 1600
  %3339 = load <8 x double>, ptr %3338, align 64, !tbaa !25
  %3340 = fmul <8 x double> %3339, splat (double 1.000100e+00)
  %3341 = fcmp ogt <8 x double> %3337, %3340
  %3342 = and <8 x i1> %3335, %3341
  %3343 = and <8 x i1> %3234, %3342
  %3344 = getelementptr inbounds nuw i8, ptr %3301, i64 4032
  %3345 = load <8 x double>, ptr %3344, align 64, !tbaa !25
  %3346 = fsub <8 x double> %3339, %3345
  %3347 = fsub <8 x double> %3337, %3345
  %3348 = fdiv <8 x double> %3346, %3347
  %3349 = fcmp ogt <8 x double> %3322, %3200
  %3350 = select <8 x i1> %3343, <8 x i64> %3333, <8 x i64> zeroinitializer
  %3351 = icmp eq <8 x i64> %3350, zeroinitializer
  %3352 = select <8 x i1> %3351, <8 x i1> splat (i1 true), <8 x i1> %3349
  %3353 = select <8 x i1> %3352, <8 x double> %3322, <8 x double> %3200
  store <8 x double> %3353, ptr %163, align 64, !tbaa !25
  %3354 = fcmp ogt <8 x double> %3348, splat (double 5.000000e-02)
  %3355 = select <8 x i1> %3354, <8 x double> %3348, <8 x double> splat (double 5.000000e-02)
  %3356 = fcmp olt <8 x double> %3355, splat (double 0x3FEE666666666666)
  %3357 = select <8 x i1> %3356, <8 x double> %3355, <8 x double> splat (double 0x3FEE666666666666)
  %3358 = fmul <8 x double> %3200, %3357
  %3359 = fcmp ogt <8 x double> %3358, splat (double 0x3EB0C6F7A0B5ED8D)
  %3360 = select <8 x i1> %3359, <8 x double> %3358, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3361 = select <8 x i1> %3351, <8 x double> %3330, <8 x double> %3360
  store <8 x double> %3361, ptr %155, align 64, !tbaa !25
  %3362 = fadd <8 x double> %3332, splat (double 1.000000e+00)
  %3363 = select <8 x i1> %3351, <8 x double> %3332, <8 x double> %3362
  store <8 x double> %3363, ptr %145, align 64, !tbaa !25
  %3364 = xor <8 x i64> %3350, %3333
  %3365 = add nuw nsw i64 %3299, 1
  %3366 = icmp eq i64 %3365, %3181
  br i1 %3366, label %3367, label %3295, !llvm.loop !117

3367:                                             ; preds = %3295, %3180
  %3368 = phi <8 x double> [ %3222, %3180 ], [ %3363, %3295 ]
  %3369 = phi <8 x double> [ %3219, %3180 ], [ %3361, %3295 ]
  %3370 = phi <8 x double> [ %3210, %3180 ], [ %3353, %3295 ]
  %3371 = phi <8 x i64> [ %3223, %3180 ], [ %3364, %3295 ]
  %3372 = load <8 x double>, ptr %227, align 64, !tbaa !25
  %3373 = fmul <8 x double> %3372, splat (double 5.000000e-01)
  %3374 = load <8 x double>, ptr %210, align 64, !tbaa !25
  %3375 = load <8 x i64>, ptr %212, align 64, !tbaa !25
  %3376 = fneg <8 x double> %3373
  %3377 = icmp eq <8 x i64> %3375, zeroinitializer
  %3378 = select <8 x i1> %3377, <8 x double> %3376, <8 x double> %3373
  %3379 = fadd <8 x double> %3374, %3378
  %3380 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %3381 = fsub <8 x double> %3380, %3379
  %3382 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %3383 = fsub <8 x double> %3382, %3379
  %3384 = fneg <8 x double> %3381
  %3385 = select <8 x i1> %3377, <8 x double> %3384, <8 x double> %3381
  %3386 = fneg <8 x double> %3383
  %3387 = select <8 x i1> %3377, <8 x double> %3386, <8 x double> %3383
  %3388 = load <8 x double>, ptr %173, align 64, !tbaa !25
  %3389 = fcmp oeq <8 x double> %3388, zeroinitializer
  %3390 = load <8 x double>, ptr %209, align 64, !tbaa !25
  %3391 = fcmp oeq <8 x double> %3390, zeroinitializer
  %3392 = and <8 x i1> %3389, %3391
  %3393 = fcmp olt <8 x double> %3385, splat (double -1.000000e-03)
  %3394 = and <8 x i1> %3392, %3393
  %3395 = fcmp ogt <8 x double> %3387, splat (double 4.000000e-03)
  %3396 = and <8 x i1> %3395, %3394
  %3397 = and <8 x i1> %3201, %3396
  %3398 = fsub <8 x double> %3385, %3387
  %3399 = fdiv <8 x double> %3385, %3398
  %3400 = fcmp ogt <8 x double> %3370, %3200
  %3401 = select <8 x i1> %3397, <8 x i64> %3371, <8 x i64> zeroinitializer
  %3402 = icmp eq <8 x i64> %3401, zeroinitializer
  %3403 = select <8 x i1> %3402, <8 x i1> splat (i1 true), <8 x i1> %3400
  %3404 = select <8 x i1> %3403, <8 x double> %3370, <8 x double> %3200
  store <8 x double> %3404, ptr %163, align 64, !tbaa !25
  %3405 = fcmp ogt <8 x double> %3399, splat (double 5.000000e-02)
  %3406 = select <8 x i1> %3405, <8 x double> %3399, <8 x double> splat (double 5.000000e-02)
  %3407 = fcmp olt <8 x double> %3406, splat (double 0x3FEE666666666666)
  %3408 = select <8 x i1> %3407, <8 x double> %3406, <8 x double> splat (double 0x3FEE666666666666)
  %3409 = fmul <8 x double> %3200, %3408
  %3410 = fcmp ogt <8 x double> %3409, splat (double 0x3EB0C6F7A0B5ED8D)
  %3411 = select <8 x i1> %3410, <8 x double> %3409, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3412 = select <8 x i1> %3402, <8 x double> %3369, <8 x double> %3411
  store <8 x double> %3412, ptr %155, align 64, !tbaa !25
  %3413 = fadd <8 x double> %3368, splat (double 1.000000e+00)
  %3414 = select <8 x i1> %3402, <8 x double> %3368, <8 x double> %3413
  store <8 x double> %3414, ptr %145, align 64, !tbaa !25
  %3415 = xor <8 x i64> %3401, %3371
  %3416 = load <8 x double>, ptr %228, align 64, !tbaa !25
  %3417 = load <8 x double>, ptr %195, align 64, !tbaa !25
  %3418 = load <8 x double>, ptr %186, align 64, !tbaa !25
  %3419 = fsub <8 x double> %3417, %3418
  %3420 = load <8 x double>, ptr %229, align 64, !tbaa !25
  %3421 = fcmp une <8 x double> %3420, splat (double 1.000000e+00)
  %3422 = load <8 x double>, ptr %230, align 64, !tbaa !25
  %3423 = fsub <8 x double> %3380, %3422
  %3424 = select <8 x i1> %3421, <8 x double> splat (double -1.000000e+00), <8 x double> %3423
  %3425 = fcmp une <8 x double> %3420, splat (double 2.000000e+00)
  %3426 = fsub <8 x double> %3416, %3422
  %3427 = select <8 x i1> %3425, <8 x double> %3424, <8 x double> %3426
  %3428 = fcmp une <8 x double> %3420, splat (double 3.000000e+00)
  %3429 = fsub <8 x double> %3419, %3422
  %3430 = select <8 x i1> %3428, <8 x double> %3427, <8 x double> %3429
  %3431 = fcmp une <8 x double> %3420, splat (double 4.000000e+00)
  %3432 = fsub <8 x double> %3422, %3419
  %3433 = select <8 x i1> %3431, <8 x double> %3430, <8 x double> %3432
  br i1 %3224, label %3434, label %3466

3434:                                             ; preds = %3367
  %3435 = load ptr, ptr %150, align 8, !tbaa !27
  %3436 = and i64 %3181, 1
  %3437 = icmp eq i64 %3181, 1
  br i1 %3437, label %3456, label %3438

3438:                                             ; preds = %3434
  %3439 = and i64 %3181, 9223372036854775806
  br label %3440

3440:                                             ; preds = %3440, %3438
  %3441 = phi i64 [ 0, %3438 ], [ %3453, %3440 ]
  %3442 = phi <8 x double> [ splat (double 1.000000e+09), %3438 ], [ %3452, %3440 ]
  %3443 = phi i64 [ 0, %3438 ], [ %3454, %3440 ]
  %3444 = getelementptr inbounds nuw %struct.Piece, ptr %3435, i64 %3441, i32 35
  %3445 = load <8 x double>, ptr %3444, align 64, !tbaa !25
  %3446 = fcmp olt <8 x double> %3442, %3445
  %3447 = select <8 x i1> %3446, <8 x double> %3442, <8 x double> %3445
  %3448 = or disjoint i64 %3441, 1
  %3449 = getelementptr inbounds nuw %struct.Piece, ptr %3435, i64 %3448, i32 35
  %3450 = load <8 x double>, ptr %3449, align 64, !tbaa !25
  %3451 = fcmp olt <8 x double> %3447, %3450
  %3452 = select <8 x i1> %3451, <8 x double> %3447, <8 x double> %3450
  %3453 = add nuw nsw i64 %3441, 2
  %3454 = add i64 %3443, 2
  %3455 = icmp eq i64 %3454, %3439
  br i1 %3455, label %3456, label %3440, !llvm.loop !118

3456:                                             ; preds = %3440, %3434
  %3457 = phi <8 x double> [ poison, %3434 ], [ %3452, %3440 ]
  %3458 = phi i64 [ 0, %3434 ], [ %3453, %3440 ]
  %3459 = phi <8 x double> [ splat (double 1.000000e+09), %3434 ], [ %3452, %3440 ]
  %3460 = icmp eq i64 %3436, 0
  br i1 %3460, label %3466, label %3461

3461:                                             ; preds = %3456
  %3462 = getelementptr inbounds nuw %struct.Piece, ptr %3435, i64 %3458, i32 35
  %3463 = load <8 x double>, ptr %3462, align 64, !tbaa !25
  %3464 = fcmp olt <8 x double> %3459, %3463
  %3465 = select <8 x i1> %3464, <8 x double> %3459, <8 x double> %3463
  br label %3466

3466:                                             ; preds = %3461, %3456, %3367
  %3467 = phi <8 x double> [ splat (double 1.000000e+09), %3367 ], [ %3457, %3456 ], [ %3465, %3461 ]
  %3468 = load <8 x double>, ptr %187, align 64, !tbaa !25
  %3469 = fsub <8 x double> %3468, %3418
  %3470 = fsub <8 x double> %3382, %3422
  %3471 = select <8 x i1> %3421, <8 x double> splat (double -1.000000e+00), <8 x double> %3470
  %3472 = fsub <8 x double> %3467, %3422
  %3473 = select <8 x i1> %3425, <8 x double> %3471, <8 x double> %3472
  %3474 = fsub <8 x double> %3469, %3422
  %3475 = select <8 x i1> %3428, <8 x double> %3473, <8 x double> %3474
  %3476 = fsub <8 x double> %3422, %3469
  %3477 = select <8 x i1> %3431, <8 x double> %3475, <8 x double> %3476
  %3478 = fcmp une <8 x double> %3420, zeroinitializer
  %3479 = fcmp oge <8 x double> %3200, splat (double 5.000000e-02)
  %3480 = and <8 x i1> %3479, %3478
  %3481 = fcmp olt <8 x double> %3433, zeroinitializer
  %3482 = and <8 x i1> %3480, %3481
  %3483 = fsub <8 x double> %3477, %3433
  %3484 = fmul <8 x double> %3483, splat (double 2.000000e-02)
  %3485 = fcmp ogt <8 x double> %3477, %3484
  %3486 = and <8 x i1> %3482, %3485
  %3487 = fsub <8 x double> %3433, %3477
  %3488 = fdiv <8 x double> %3433, %3487
  %3489 = fcmp olt <8 x double> %3488, splat (double 0x3FEE666666666666)
  %3490 = and <8 x i1> %3489, %3486
  %3491 = fcmp ogt <8 x double> %3404, %3200
  %3492 = select <8 x i1> %3490, <8 x i64> %3415, <8 x i64> zeroinitializer
  %3493 = icmp eq <8 x i64> %3492, zeroinitializer
  %3494 = select <8 x i1> %3493, <8 x i1> splat (i1 true), <8 x i1> %3491
  %3495 = select <8 x i1> %3494, <8 x double> %3404, <8 x double> %3200
  store <8 x double> %3495, ptr %163, align 64, !tbaa !25
  %3496 = fcmp ogt <8 x double> %3488, splat (double 5.000000e-02)
  %3497 = select <8 x i1> %3496, <8 x double> %3488, <8 x double> splat (double 5.000000e-02)
  %3498 = fcmp olt <8 x double> %3497, splat (double 0x3FEE666666666666)
  %3499 = select <8 x i1> %3498, <8 x double> %3497, <8 x double> splat (double 0x3FEE666666666666)
  %3500 = fmul <8 x double> %3200, %3499
  %3501 = fcmp ogt <8 x double> %3500, splat (double 0x3EB0C6F7A0B5ED8D)
  %3502 = select <8 x i1> %3501, <8 x double> %3500, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3503 = select <8 x i1> %3493, <8 x double> %3412, <8 x double> %3502
  store <8 x double> %3503, ptr %155, align 64, !tbaa !25
  %3504 = fadd <8 x double> %3414, splat (double 1.000000e+00)
  %3505 = select <8 x i1> %3493, <8 x double> %3414, <8 x double> %3504
  store <8 x double> %3505, ptr %145, align 64, !tbaa !25
  %3506 = xor <8 x i64> %3492, %3415
  %3507 = or <8 x i64> %3506, %3187
  %3508 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3507)
  %3509 = icmp eq i64 %3508, 0
  br i1 %3509, label %543, label %3566

3510:                                             ; preds = %3178, %3558
  %3511 = phi i64 [ 0, %3178 ], [ %3563, %3558 ]
  %3512 = load ptr, ptr %150, align 8, !tbaa !27
  %3513 = getelementptr inbounds nuw %struct.Piece, ptr %3512, i64 %3511
  %3514 = getelementptr inbounds nuw i8, ptr %3513, i64 7560
  %3515 = load ptr, ptr %3514, align 8, !tbaa !58
  %3516 = load <8 x double>, ptr %3515, align 64, !tbaa !25
  %3517 = getelementptr inbounds nuw i8, ptr %3513, i64 1344
  %3518 = load <8 x double>, ptr %3517, align 64, !tbaa !25
  %3519 = getelementptr inbounds nuw i8, ptr %3515, i64 64
  %3520 = load <8 x double>, ptr %3519, align 64, !tbaa !25
  %3521 = fsub <8 x double> %3520, %3516
  %3522 = fneg <8 x double> %3518
  %3523 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3522, <8 x double> %3521, <8 x double> %3516)
  %3524 = getelementptr inbounds nuw i8, ptr %3513, i64 7552
  %3525 = load i64, ptr %3524, align 64, !tbaa !30
  %3526 = icmp eq i64 %3525, 0
  br i1 %3526, label %3558, label %3527

3527:                                             ; preds = %3510
  %3528 = getelementptr <8 x double>, ptr %3515, i64 %3525
  %3529 = getelementptr i8, ptr %3528, i64 -64
  %3530 = load <8 x double>, ptr %3529, align 64, !tbaa !25
  %3531 = load <8 x double>, ptr %3528, align 64, !tbaa !25
  %3532 = getelementptr inbounds nuw i8, ptr %3513, i64 2880
  %3533 = load <8 x double>, ptr %3532, align 64, !tbaa !25
  %3534 = getelementptr inbounds nuw i8, ptr %3513, i64 2944
  %3535 = load <8 x double>, ptr %3534, align 64, !tbaa !25
  %3536 = getelementptr inbounds nuw i8, ptr %3513, i64 64
  %3537 = load <8 x double>, ptr %3536, align 64, !tbaa !25
  %3538 = fsub <8 x double> %3535, %3537
  %3539 = fmul <8 x double> %3533, %3538
  %3540 = getelementptr inbounds nuw i8, ptr %3513, i64 576
  %3541 = load <8 x double>, ptr %3540, align 64, !tbaa !25
  %3542 = getelementptr inbounds nuw i8, ptr %3513, i64 2816
  %3543 = load <8 x double>, ptr %3542, align 64, !tbaa !25
  %3544 = fdiv <8 x double> %3541, %3543
  %3545 = getelementptr inbounds nuw i8, ptr %3513, i64 192
  %3546 = load <8 x double>, ptr %3545, align 64, !tbaa !25
  %3547 = getelementptr inbounds nuw i8, ptr %3513, i64 256
  %3548 = load <8 x double>, ptr %3547, align 64, !tbaa !25
  %3549 = getelementptr inbounds nuw i8, ptr %3513, i64 320
  %3550 = load <8 x double>, ptr %3549, align 64, !tbaa !25
  %3551 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3531, <8 x double> %3550, <8 x double> %3548)
  %3552 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3531, <8 x double> %3551, <8 x double> %3546)
  %3553 = fdiv <8 x double> %3552, %3539
  %3554 = fmul <8 x double> %3531, %3553
  %3555 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3544, <8 x double> %3530, <8 x double> %3554)
  %3556 = fadd <8 x double> %3544, %3553
  %3557 = fdiv <8 x double> %3555, %3556
  br label %3558

3558:                                             ; preds = %3510, %3527
  %3559 = phi <8 x double> [ %3557, %3527 ], [ %3523, %3510 ]
  %3560 = getelementptr inbounds nuw i8, ptr %3513, i64 7232
  %3561 = load <8 x double>, ptr %3560, align 64, !tbaa !25
  %3562 = select <8 x i1> %3179, <8 x double> %3561, <8 x double> %3559
  store <8 x double> %3562, ptr %3560, align 64, !tbaa !25
  %3563 = add nuw nsw i64 %3511, 1
  %3564 = load i64, ptr %149, align 64, !tbaa !16
  %3565 = icmp slt i64 %3563, %3564
  br i1 %3565, label %3510, label %3180, !llvm.loop !119

3566:                                             ; preds = %3466
  %3567 = icmp eq <8 x i64> %3507, zeroinitializer
  %3568 = select <8 x i1> %3567, <8 x double> %3194, <8 x double> %3193
  store <8 x double> %3568, ptr %225, align 64, !tbaa !25
  %3569 = load <8 x double>, ptr %172, align 64, !tbaa !25
  %3570 = select <8 x i1> %3567, <8 x double> %3569, <8 x double> %3380
  store <8 x double> %3570, ptr %172, align 64, !tbaa !25
  %3571 = select <8 x i1> %3567, <8 x double> %3380, <8 x double> %3382
  store <8 x double> %3571, ptr %171, align 64, !tbaa !25
  %3572 = load <8 x double>, ptr %257, align 64, !tbaa !25
  %3573 = select <8 x i1> %3567, <8 x double> %3572, <8 x double> %3417
  store <8 x double> %3573, ptr %257, align 64, !tbaa !25
  %3574 = select <8 x i1> %3567, <8 x double> %3417, <8 x double> %3468
  store <8 x double> %3574, ptr %258, align 64, !tbaa !25
  %3575 = load <8 x double>, ptr %260, align 64, !tbaa !25
  %3576 = load <8 x double>, ptr %259, align 64, !tbaa !25
  %3577 = select <8 x i1> %3567, <8 x double> %3576, <8 x double> %3575
  store <8 x double> %3577, ptr %259, align 64, !tbaa !25
  %3578 = load <8 x double>, ptr %261, align 64, !tbaa !25
  %3579 = select <8 x i1> %3567, <8 x double> %3575, <8 x double> %3578
  store <8 x double> %3579, ptr %260, align 64, !tbaa !25
  %3580 = load <8 x double>, ptr %263, align 64, !tbaa !25
  %3581 = load <8 x double>, ptr %262, align 64, !tbaa !25
  %3582 = select <8 x i1> %3567, <8 x double> %3581, <8 x double> %3580
  store <8 x double> %3582, ptr %262, align 64, !tbaa !25
  %3583 = load <8 x double>, ptr %264, align 64, !tbaa !25
  %3584 = select <8 x i1> %3567, <8 x double> %3580, <8 x double> %3583
  store <8 x double> %3584, ptr %263, align 64, !tbaa !25
  %3585 = load <8 x double>, ptr %266, align 64, !tbaa !25
  %3586 = load <8 x double>, ptr %265, align 64, !tbaa !25
  %3587 = select <8 x i1> %3567, <8 x double> %3586, <8 x double> %3585
  store <8 x double> %3587, ptr %265, align 64, !tbaa !25
  %3588 = load <8 x double>, ptr %267, align 64, !tbaa !25
  %3589 = select <8 x i1> %3567, <8 x double> %3585, <8 x double> %3588
  store <8 x double> %3589, ptr %266, align 64, !tbaa !25
  %3590 = load <8 x double>, ptr %269, align 64, !tbaa !25
  %3591 = load <8 x double>, ptr %268, align 64, !tbaa !25
  %3592 = select <8 x i1> %3567, <8 x double> %3591, <8 x double> %3590
  store <8 x double> %3592, ptr %268, align 64, !tbaa !25
  %3593 = load <8 x double>, ptr %270, align 64, !tbaa !25
  %3594 = select <8 x i1> %3567, <8 x double> %3590, <8 x double> %3593
  store <8 x double> %3594, ptr %269, align 64, !tbaa !25
  %3595 = xor <8 x i64> %3507, splat (i64 -1)
  br i1 %3224, label %3596, label %3971

3596:                                             ; preds = %3566, %3936
  %3597 = phi i64 [ %3948, %3936 ], [ 0, %3566 ]
  %3598 = load ptr, ptr %150, align 8, !tbaa !27
  %3599 = getelementptr inbounds nuw %struct.Piece, ptr %3598, i64 %3597
  %3600 = getelementptr inbounds nuw i8, ptr %3599, i64 1664
  %3601 = load <8 x double>, ptr %3600, align 64, !tbaa !25
  %3602 = fcmp ogt <8 x double> %3601, zeroinitializer
  %3603 = bitcast <8 x i1> %3602 to i8
  %3604 = icmp eq i8 %3603, 0
  %3605 = load i64, ptr %140, align 8, !tbaa !20
  br i1 %3604, label %3863, label %3606

3606:                                             ; preds = %3596
  %3607 = add i64 %3605, -1
  %3608 = getelementptr inbounds nuw i8, ptr %3599, i64 4416
  %3609 = load <8 x double>, ptr %3608, align 64, !tbaa !25
  %3610 = getelementptr inbounds nuw i8, ptr %3599, i64 3648
  %3611 = load <8 x double>, ptr %3610, align 64, !tbaa !25
  %3612 = getelementptr inbounds nuw i8, ptr %3599, i64 7552
  %3613 = load i64, ptr %3612, align 64, !tbaa !30
  %3614 = icmp sgt i64 %3605, %3613
  br i1 %3614, label %3623, label %3615

3615:                                             ; preds = %3606
  %3616 = getelementptr inbounds nuw i8, ptr %3599, i64 7648
  %3617 = load ptr, ptr %3616, align 32, !tbaa !71
  %3618 = getelementptr inbounds <8 x double>, ptr %3617, i64 %3607
  %3619 = load <8 x double>, ptr %3618, align 64, !tbaa !25
  %3620 = getelementptr inbounds nuw i8, ptr %3599, i64 1536
  %3621 = load <8 x double>, ptr %3620, align 64, !tbaa !25
  %3622 = fmul <8 x double> %3619, %3621
  br label %3632

3623:                                             ; preds = %3606
  %3624 = getelementptr inbounds nuw i8, ptr %3599, i64 1536
  %3625 = load <8 x double>, ptr %3624, align 64, !tbaa !25
  %3626 = getelementptr inbounds nuw i8, ptr %3599, i64 7648
  %3627 = load ptr, ptr %3626, align 32, !tbaa !71
  %3628 = getelementptr inbounds <8 x double>, ptr %3627, i64 %3607
  %3629 = load <8 x double>, ptr %3628, align 64, !tbaa !25
  %3630 = fsub <8 x double> %3609, %3625
  %3631 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3629, <8 x double> %3630, <8 x double> %3625)
  br label %3632

3632:                                             ; preds = %3623, %3615
  %3633 = phi <8 x double> [ %3621, %3615 ], [ %3625, %3623 ]
  %3634 = phi <8 x double> [ %3622, %3615 ], [ %3631, %3623 ]
  %3635 = getelementptr inbounds nuw i8, ptr %3599, i64 3008
  %3636 = load <8 x double>, ptr %3635, align 64, !tbaa !25
  %3637 = fcmp ole <8 x double> %3634, %3636
  %3638 = getelementptr inbounds nuw i8, ptr %3599, i64 7296
  %3639 = load <8 x double>, ptr %3638, align 64, !tbaa !25
  %3640 = fcmp oeq <8 x double> %3639, zeroinitializer
  %3641 = select <8 x i1> %3640, <8 x i1> %3637, <8 x i1> zeroinitializer
  %3642 = select <8 x i1> %3641, <8 x i64> %3507, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %3643 = xor <8 x i64> %3642, %3507
  store <8 x i64> %3643, ptr %12, align 64, !tbaa !25
  %3644 = fsub <8 x double> %3609, %3611
  %3645 = getelementptr inbounds nuw i8, ptr %3599, i64 1536
  %3646 = fsub <8 x double> %3611, %3633
  %3647 = fdiv <8 x double> %3644, %3646
  %3648 = getelementptr inbounds nuw i8, ptr %3599, i64 7592
  %3649 = load ptr, ptr %3648, align 8, !tbaa !61
  %3650 = getelementptr inbounds <8 x double>, ptr %3649, i64 %3613
  %3651 = load <8 x double>, ptr %3650, align 64, !tbaa !25
  %3652 = getelementptr inbounds nuw i8, ptr %3599, i64 7600
  %3653 = load ptr, ptr %3652, align 16, !tbaa !47
  %3654 = getelementptr inbounds <8 x double>, ptr %3653, i64 %3613
  %3655 = load <8 x double>, ptr %3654, align 64, !tbaa !25
  %3656 = icmp eq <8 x i64> %3642, zeroinitializer
  %3657 = select <8 x i1> %3656, <8 x double> %3655, <8 x double> %3651
  store <8 x double> %3657, ptr %3654, align 64, !tbaa !25
  %3658 = load i64, ptr %3612, align 64, !tbaa !30
  %3659 = add nsw i64 %3658, 1
  %3660 = icmp slt i64 %3659, %3607
  br i1 %3660, label %3661, label %3665

3661:                                             ; preds = %3632
  %3662 = getelementptr inbounds nuw i8, ptr %3599, i64 7664
  br label %3705

3663:                                             ; preds = %3705
  %3664 = load i64, ptr %3612, align 64, !tbaa !30
  br label %3665

3665:                                             ; preds = %3663, %3632
  %3666 = phi i64 [ %3658, %3632 ], [ %3664, %3663 ]
  %3667 = phi <8 x double> [ %3651, %3632 ], [ %3710, %3663 ]
  %3668 = icmp sgt i64 %3605, %3666
  br i1 %3668, label %3676, label %3669

3669:                                             ; preds = %3665
  %3670 = getelementptr inbounds nuw i8, ptr %3599, i64 7648
  %3671 = load ptr, ptr %3670, align 32, !tbaa !71
  %3672 = getelementptr inbounds <8 x double>, ptr %3671, i64 %3607
  %3673 = load <8 x double>, ptr %3672, align 64, !tbaa !25
  %3674 = load <8 x double>, ptr %3645, align 64, !tbaa !25
  %3675 = fmul <8 x double> %3673, %3674
  br label %3684

3676:                                             ; preds = %3665
  %3677 = load <8 x double>, ptr %3645, align 64, !tbaa !25
  %3678 = getelementptr inbounds nuw i8, ptr %3599, i64 7648
  %3679 = load ptr, ptr %3678, align 32, !tbaa !71
  %3680 = getelementptr inbounds <8 x double>, ptr %3679, i64 %3607
  %3681 = load <8 x double>, ptr %3680, align 64, !tbaa !25
  %3682 = fsub <8 x double> %3611, %3677
  %3683 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3681, <8 x double> %3682, <8 x double> %3677)
  br label %3684

3684:                                             ; preds = %3676, %3669
  %3685 = phi <8 x double> [ %3675, %3669 ], [ %3683, %3676 ]
  %3686 = load ptr, ptr %3648, align 8, !tbaa !61
  %3687 = getelementptr inbounds <8 x double>, ptr %3686, i64 %3607
  %3688 = load <8 x double>, ptr %3687, align 64, !tbaa !25
  %3689 = load ptr, ptr %3652, align 16, !tbaa !47
  %3690 = getelementptr inbounds <8 x double>, ptr %3689, i64 %3607
  %3691 = fsub <8 x double> %3667, %3688
  %3692 = fsub <8 x double> %3634, %3685
  %3693 = load <8 x double>, ptr %3635, align 64, !tbaa !25
  %3694 = fsub <8 x double> %3693, %3685
  %3695 = fdiv <8 x double> %3692, %3694
  %3696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3691, <8 x double> %3695, <8 x double> %3688)
  %3697 = load <8 x double>, ptr %3690, align 64, !tbaa !25
  %3698 = select <8 x i1> %3656, <8 x double> %3697, <8 x double> %3696
  store <8 x double> %3698, ptr %3690, align 64, !tbaa !25
  %3699 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3643)
  %3700 = icmp eq i64 %3699, 0
  br i1 %3700, label %3861, label %3701

3701:                                             ; preds = %3684
  %3702 = getelementptr inbounds nuw i8, ptr %3599, i64 7648
  %3703 = getelementptr inbounds nuw i8, ptr %3599, i64 3136
  %3704 = getelementptr inbounds nuw i8, ptr %3599, i64 832
  br label %3723

3705:                                             ; preds = %3661, %3705
  %3706 = phi i64 [ %3659, %3661 ], [ %3721, %3705 ]
  %3707 = phi <8 x double> [ %3651, %3661 ], [ %3710, %3705 ]
  %3708 = load ptr, ptr %3648, align 8, !tbaa !61
  %3709 = getelementptr inbounds <8 x double>, ptr %3708, i64 %3706
  %3710 = load <8 x double>, ptr %3709, align 64, !tbaa !25
  %3711 = load ptr, ptr %3652, align 16, !tbaa !47
  %3712 = getelementptr inbounds <8 x double>, ptr %3711, i64 %3706
  %3713 = fsub <8 x double> %3707, %3710
  %3714 = load ptr, ptr %3662, align 16, !tbaa !120
  %3715 = getelementptr inbounds <8 x double>, ptr %3714, i64 %3706
  %3716 = load <8 x double>, ptr %3715, align 64, !tbaa !25
  %3717 = fmul <8 x double> %3647, %3716
  %3718 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3713, <8 x double> %3717, <8 x double> %3710)
  %3719 = load <8 x double>, ptr %3712, align 64, !tbaa !25
  %3720 = select <8 x i1> %3656, <8 x double> %3719, <8 x double> %3718
  store <8 x double> %3720, ptr %3712, align 64, !tbaa !25
  %3721 = add nsw i64 %3706, 1
  %3722 = icmp eq i64 %3721, %3607
  br i1 %3722, label %3663, label %3705, !llvm.loop !121

3723:                                             ; preds = %3701, %3858
  %3724 = phi i64 [ 0, %3701 ], [ %3859, %3858 ]
  %3725 = getelementptr inbounds nuw i64, ptr %12, i64 %3724
  %3726 = load i64, ptr %3725, align 8, !tbaa !29
  %3727 = icmp eq i64 %3726, 0
  br i1 %3727, label %3858, label %3728

3728:                                             ; preds = %3723
  %3729 = load i64, ptr %140, align 8, !tbaa !20
  %3730 = load i64, ptr %3612, align 64, !tbaa !30
  %3731 = getelementptr inbounds nuw double, ptr %3645, i64 %3724
  %3732 = load double, ptr %3731, align 8, !tbaa !42
  %3733 = getelementptr inbounds nuw double, ptr %3635, i64 %3724
  %3734 = load double, ptr %3733, align 8, !tbaa !42
  %3735 = add nsw i64 %3729, -1
  %3736 = icmp sgt i64 %3729, %3730
  br i1 %3736, label %3737, label %3858

3737:                                             ; preds = %3728
  %3738 = getelementptr inbounds nuw double, ptr %3610, i64 %3724
  %3739 = load double, ptr %3738, align 8, !tbaa !42
  %3740 = getelementptr inbounds nuw double, ptr %3608, i64 %3724
  %3741 = load double, ptr %3740, align 8, !tbaa !42
  %3742 = load ptr, ptr %3702, align 32
  %3743 = getelementptr i8, ptr %3742, i64 64
  %3744 = getelementptr double, ptr %3743, i64 %3724
  %3745 = fsub double %3739, %3732
  %3746 = getelementptr double, ptr %3742, i64 %3724
  %3747 = fsub double %3741, %3732
  %3748 = load ptr, ptr %3648, align 8, !tbaa !61
  %3749 = getelementptr double, ptr %3748, i64 %3724
  %3750 = load ptr, ptr %3652, align 16, !tbaa !47
  %3751 = getelementptr double, ptr %3750, i64 %3724
  %3752 = getelementptr <8 x double>, ptr %3746, i64 %3735
  br label %3780

3753:                                             ; preds = %3826
  %3754 = getelementptr inbounds nuw double, ptr %3638, i64 %3724
  %3755 = load double, ptr %3754, align 8, !tbaa !42
  %3756 = fcmp ogt double %3755, 0.000000e+00
  %3757 = fcmp ogt double %3837, 0.000000e+00
  %3758 = select i1 %3756, i1 %3757, i1 false
  br i1 %3758, label %3759, label %3858

3759:                                             ; preds = %3753
  %3760 = getelementptr inbounds nuw double, ptr %3703, i64 %3724
  %3761 = getelementptr inbounds nuw double, ptr %3704, i64 %3724
  %3762 = sub i64 %3729, %3730
  %3763 = add i64 %3730, 1
  %3764 = and i64 %3762, 1
  %3765 = icmp eq i64 %3764, 0
  br i1 %3765, label %3775, label %3766

3766:                                             ; preds = %3759
  %3767 = load double, ptr %3760, align 8, !tbaa !42
  %3768 = load double, ptr %3761, align 8, !tbaa !42
  %3769 = fmul double %3837, %3768
  %3770 = fdiv double %3767, %3769
  %3771 = getelementptr <8 x double>, ptr %3751, i64 %3730
  %3772 = load double, ptr %3771, align 8, !tbaa !42
  %3773 = fmul double %3772, %3770
  store double %3773, ptr %3771, align 8, !tbaa !42
  %3774 = add nsw i64 %3730, 1
  br label %3775

3775:                                             ; preds = %3766, %3759
  %3776 = phi i64 [ %3730, %3759 ], [ %3774, %3766 ]
  %3777 = icmp eq i64 %3729, %3763
  br i1 %3777, label %3858, label %3778

3778:                                             ; preds = %3775
  %3779 = getelementptr i8, ptr %3751, i64 64
  br label %3840

3780:                                             ; preds = %3826, %3737
  %3781 = phi double [ 0.000000e+00, %3737 ], [ %3837, %3826 ]
  %3782 = phi i64 [ %3735, %3737 ], [ %3838, %3826 ]
  %3783 = icmp eq i64 %3782, %3735
  br i1 %3783, label %3784, label %3787

3784:                                             ; preds = %3780
  %3785 = load double, ptr %3752, align 8, !tbaa !42
  %3786 = tail call noundef double @llvm.fmuladd.f64(double %3785, double %3745, double %3732)
  br label %3798

3787:                                             ; preds = %3780
  %3788 = getelementptr <8 x double>, ptr %3744, i64 %3782
  %3789 = load double, ptr %3788, align 8, !tbaa !42
  %3790 = tail call noundef double @llvm.fmuladd.f64(double %3789, double %3745, double %3732)
  %3791 = getelementptr <8 x double>, ptr %3746, i64 %3782
  %3792 = load double, ptr %3791, align 8, !tbaa !42
  %3793 = tail call noundef double @llvm.fmuladd.f64(double %3792, double %3745, double %3732)
  %3794 = tail call noundef double @llvm.fmuladd.f64(double %3789, double %3747, double %3732)
  %3795 = fcmp ult double %3794, %3790
  br i1 %3795, label %3796, label %3798

3796:                                             ; preds = %3787
  %3797 = add nsw i64 %3782, 1
  br label %3798

3798:                                             ; preds = %3796, %3787, %3784
  %3799 = phi double [ %3793, %3796 ], [ %3793, %3787 ], [ %3786, %3784 ]
  %3800 = phi double [ %3790, %3796 ], [ %3790, %3787 ], [ %3734, %3784 ]
  %3801 = phi i64 [ %3797, %3796 ], [ %3782, %3787 ], [ %3735, %3784 ]
  %3802 = icmp sgt i64 %3801, %3730
  br i1 %3802, label %3803, label %3826

3803:                                             ; preds = %3798
  %3804 = load ptr, ptr %3648, align 8
  %3805 = getelementptr double, ptr %3804, i64 %3724
  br label %3806

3806:                                             ; preds = %3821, %3803
  %3807 = phi i64 [ %3801, %3803 ], [ %3824, %3821 ]
  %3808 = phi double [ 0.000000e+00, %3803 ], [ %3823, %3821 ]
  %3809 = phi double [ %3800, %3803 ], [ %3822, %3821 ]
  %3810 = getelementptr <8 x double>, ptr %3746, i64 %3807
  %3811 = load double, ptr %3810, align 8, !tbaa !42
  %3812 = tail call noundef double @llvm.fmuladd.f64(double %3811, double %3747, double %3732)
  %3813 = fcmp ogt double %3812, %3799
  br i1 %3813, label %3814, label %3826

3814:                                             ; preds = %3806
  %3815 = fcmp ogt double %3809, %3812
  br i1 %3815, label %3816, label %3821

3816:                                             ; preds = %3814
  %3817 = getelementptr <8 x double>, ptr %3805, i64 %3807
  %3818 = load double, ptr %3817, align 8, !tbaa !42
  %3819 = fsub double %3809, %3812
  %3820 = tail call double @llvm.fmuladd.f64(double %3818, double %3819, double %3808)
  br label %3821

3821:                                             ; preds = %3816, %3814
  %3822 = phi double [ %3812, %3816 ], [ %3809, %3814 ]
  %3823 = phi double [ %3820, %3816 ], [ %3808, %3814 ]
  %3824 = add nsw i64 %3807, -1
  %3825 = icmp sgt i64 %3824, %3730
  br i1 %3825, label %3806, label %3826, !llvm.loop !122

3826:                                             ; preds = %3821, %3806, %3798
  %3827 = phi double [ %3800, %3798 ], [ %3809, %3806 ], [ %3822, %3821 ]
  %3828 = phi double [ 0.000000e+00, %3798 ], [ %3808, %3806 ], [ %3823, %3821 ]
  %3829 = phi i64 [ %3801, %3798 ], [ %3807, %3806 ], [ %3730, %3821 ]
  %3830 = getelementptr <8 x double>, ptr %3749, i64 %3829
  %3831 = load double, ptr %3830, align 8, !tbaa !42
  %3832 = fsub double %3827, %3799
  %3833 = tail call double @llvm.fmuladd.f64(double %3831, double %3832, double %3828)
  %3834 = fsub double %3800, %3799
  %3835 = fdiv double %3833, %3834
  %3836 = getelementptr <8 x double>, ptr %3751, i64 %3782
  store double %3835, ptr %3836, align 8, !tbaa !42
  %3837 = fadd double %3781, %3833
  %3838 = add nsw i64 %3782, -1
  %3839 = icmp sgt i64 %3782, %3730
  br i1 %3839, label %3780, label %3753, !llvm.loop !123

3840:                                             ; preds = %3840, %3778
  %3841 = phi i64 [ %3776, %3778 ], [ %3856, %3840 ]
  %3842 = load double, ptr %3760, align 8, !tbaa !42
  %3843 = load double, ptr %3761, align 8, !tbaa !42
  %3844 = fmul double %3837, %3843
  %3845 = fdiv double %3842, %3844
  %3846 = getelementptr <8 x double>, ptr %3751, i64 %3841
  %3847 = load double, ptr %3846, align 8, !tbaa !42
  %3848 = fmul double %3847, %3845
  store double %3848, ptr %3846, align 8, !tbaa !42
  %3849 = load double, ptr %3760, align 8, !tbaa !42
  %3850 = load double, ptr %3761, align 8, !tbaa !42
  %3851 = fmul double %3837, %3850
  %3852 = fdiv double %3849, %3851
  %3853 = getelementptr <8 x double>, ptr %3779, i64 %3841
  %3854 = load double, ptr %3853, align 8, !tbaa !42
  %3855 = fmul double %3854, %3852
  store double %3855, ptr %3853, align 8, !tbaa !42
  %3856 = add nsw i64 %3841, 2
  %3857 = icmp eq i64 %3856, %3729
  br i1 %3857, label %3858, label %3840, !llvm.loop !124

3858:                                             ; preds = %3775, %3840, %3753, %3728, %3723
  %3859 = add nuw nsw i64 %3724, 1
  %3860 = icmp eq i64 %3859, 8
  br i1 %3860, label %3861, label %3723, !llvm.loop !125

3861:                                             ; preds = %3858, %3684
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  %3862 = load i64, ptr %140, align 8, !tbaa !20
  br label %3863

3863:                                             ; preds = %3596, %3861
  %3864 = phi i64 [ %3605, %3596 ], [ %3862, %3861 ]
  %3865 = icmp sgt i64 %3864, 0
  br i1 %3865, label %3866, label %3870

3866:                                             ; preds = %3863
  %3867 = getelementptr inbounds nuw i8, ptr %3599, i64 7576
  %3868 = getelementptr inbounds nuw i8, ptr %3599, i64 7568
  %3869 = getelementptr inbounds nuw i8, ptr %3599, i64 7560
  br label %3880

3870:                                             ; preds = %3880, %3863
  %3871 = load i64, ptr %141, align 16, !tbaa !21
  %3872 = icmp sgt i64 %3871, 0
  br i1 %3872, label %3873, label %3899

3873:                                             ; preds = %3870
  %3874 = getelementptr inbounds nuw i8, ptr %3599, i64 7744
  %3875 = getelementptr inbounds nuw i8, ptr %3599, i64 7736
  %3876 = getelementptr inbounds nuw i8, ptr %3599, i64 7728
  %3877 = getelementptr inbounds nuw i8, ptr %3599, i64 7696
  %3878 = getelementptr inbounds nuw i8, ptr %3599, i64 7688
  %3879 = getelementptr inbounds nuw i8, ptr %3599, i64 7680
  br label %3903

3880:                                             ; preds = %3866, %3880
  %3881 = phi i64 [ 0, %3866 ], [ %3896, %3880 ]
  %3882 = load ptr, ptr %3867, align 8, !tbaa !57
  %3883 = getelementptr inbounds nuw <8 x double>, ptr %3882, i64 %3881
  %3884 = load ptr, ptr %3868, align 16, !tbaa !46
  %3885 = getelementptr inbounds nuw <8 x double>, ptr %3884, i64 %3881
  %3886 = load <8 x double>, ptr %3885, align 64, !tbaa !25
  %3887 = load <8 x double>, ptr %3883, align 64, !tbaa !25
  %3888 = select <8 x i1> %3567, <8 x double> %3887, <8 x double> %3886
  store <8 x double> %3888, ptr %3883, align 64, !tbaa !25
  %3889 = load ptr, ptr %3868, align 16, !tbaa !46
  %3890 = getelementptr inbounds nuw <8 x double>, ptr %3889, i64 %3881
  %3891 = load ptr, ptr %3869, align 8, !tbaa !58
  %3892 = getelementptr inbounds nuw <8 x double>, ptr %3891, i64 %3881
  %3893 = load <8 x double>, ptr %3892, align 64, !tbaa !25
  %3894 = load <8 x double>, ptr %3890, align 64, !tbaa !25
  %3895 = select <8 x i1> %3567, <8 x double> %3894, <8 x double> %3893
  store <8 x double> %3895, ptr %3890, align 64, !tbaa !25
  %3896 = add nuw nsw i64 %3881, 1
  %3897 = load i64, ptr %140, align 8, !tbaa !20
  %3898 = icmp slt i64 %3896, %3897
  br i1 %3898, label %3880, label %3870, !llvm.loop !126

3899:                                             ; preds = %3903, %3870
  %3900 = getelementptr inbounds nuw i8, ptr %3599, i64 4480
  %3901 = getelementptr inbounds nuw i8, ptr %3599, i64 3712
  %3902 = getelementptr inbounds nuw i8, ptr %3599, i64 2944
  br label %3951

3903:                                             ; preds = %3873, %3903
  %3904 = phi i64 [ 0, %3873 ], [ %3933, %3903 ]
  %3905 = load ptr, ptr %3874, align 64, !tbaa !64
  %3906 = getelementptr inbounds nuw <8 x double>, ptr %3905, i64 %3904
  %3907 = load ptr, ptr %3875, align 8, !tbaa !49
  %3908 = getelementptr inbounds nuw <8 x double>, ptr %3907, i64 %3904
  %3909 = load <8 x double>, ptr %3908, align 64, !tbaa !25
  %3910 = load <8 x double>, ptr %3906, align 64, !tbaa !25
  %3911 = select <8 x i1> %3567, <8 x double> %3910, <8 x double> %3909
  store <8 x double> %3911, ptr %3906, align 64, !tbaa !25
  %3912 = load ptr, ptr %3875, align 8, !tbaa !49
  %3913 = getelementptr inbounds nuw <8 x double>, ptr %3912, i64 %3904
  %3914 = load ptr, ptr %3876, align 16, !tbaa !78
  %3915 = getelementptr inbounds nuw <8 x double>, ptr %3914, i64 %3904
  %3916 = load <8 x double>, ptr %3915, align 64, !tbaa !25
  %3917 = load <8 x double>, ptr %3913, align 64, !tbaa !25
  %3918 = select <8 x i1> %3567, <8 x double> %3917, <8 x double> %3916
  store <8 x double> %3918, ptr %3913, align 64, !tbaa !25
  %3919 = load ptr, ptr %3877, align 16, !tbaa !65
  %3920 = getelementptr inbounds nuw <8 x double>, ptr %3919, i64 %3904
  %3921 = load ptr, ptr %3878, align 8, !tbaa !50
  %3922 = getelementptr inbounds nuw <8 x double>, ptr %3921, i64 %3904
  %3923 = load <8 x double>, ptr %3922, align 64, !tbaa !25
  %3924 = load <8 x double>, ptr %3920, align 64, !tbaa !25
  %3925 = select <8 x i1> %3567, <8 x double> %3924, <8 x double> %3923
  store <8 x double> %3925, ptr %3920, align 64, !tbaa !25
  %3926 = load ptr, ptr %3878, align 8, !tbaa !50
  %3927 = getelementptr inbounds nuw <8 x double>, ptr %3926, i64 %3904
  %3928 = load ptr, ptr %3879, align 64, !tbaa !109
  %3929 = getelementptr inbounds nuw <8 x double>, ptr %3928, i64 %3904
  %3930 = load <8 x double>, ptr %3929, align 64, !tbaa !25
  %3931 = load <8 x double>, ptr %3927, align 64, !tbaa !25
  %3932 = select <8 x i1> %3567, <8 x double> %3931, <8 x double> %3930
  store <8 x double> %3932, ptr %3927, align 64, !tbaa !25
  %3933 = add nuw nsw i64 %3904, 1
  %3934 = load i64, ptr %141, align 16, !tbaa !21
  %3935 = icmp slt i64 %3933, %3934
  br i1 %3935, label %3903, label %3899, !llvm.loop !127

3936:                                             ; preds = %3951
  %3937 = getelementptr inbounds nuw i8, ptr %3599, i64 7424
  %3938 = getelementptr inbounds nuw i8, ptr %3599, i64 5696
  %3939 = load <8 x double>, ptr %3938, align 64, !tbaa !25
  %3940 = fcmp ogt <8 x double> %3939, zeroinitializer
  %3941 = load <8 x double>, ptr %185, align 64, !tbaa !25
  %3942 = fcmp une <8 x double> %3941, splat (double 2.000000e+00)
  %3943 = and <8 x i1> %3940, %3942
  %3944 = select <8 x i1> %3943, <8 x i64> %3507, <8 x i64> zeroinitializer
  %3945 = load <8 x i64>, ptr %3937, align 64, !tbaa !25
  %3946 = and <8 x i64> %3945, %3595
  %3947 = or <8 x i64> %3944, %3946
  store <8 x i64> %3947, ptr %3937, align 64, !tbaa !25
  %3948 = add nuw nsw i64 %3597, 1
  %3949 = load i64, ptr %149, align 64, !tbaa !16
  %3950 = icmp slt i64 %3948, %3949
  br i1 %3950, label %3596, label %3963, !llvm.loop !128

3951:                                             ; preds = %3899, %3951
  %3952 = phi i64 [ 0, %3899 ], [ %3961, %3951 ]
  %3953 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3900, i64 0, i64 %3952
  %3954 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3901, i64 0, i64 %3952
  %3955 = load <8 x double>, ptr %3954, align 64, !tbaa !25
  %3956 = load <8 x double>, ptr %3953, align 64, !tbaa !25
  %3957 = select <8 x i1> %3567, <8 x double> %3956, <8 x double> %3955
  store <8 x double> %3957, ptr %3953, align 64, !tbaa !25
  %3958 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3902, i64 0, i64 %3952
  %3959 = load <8 x double>, ptr %3958, align 64, !tbaa !25
  %3960 = select <8 x i1> %3567, <8 x double> %3955, <8 x double> %3959
  store <8 x double> %3960, ptr %3954, align 64, !tbaa !25
  %3961 = add nuw nsw i64 %3952, 1
  %3962 = icmp eq i64 %3961, 12
  br i1 %3962, label %3936, label %3951, !llvm.loop !129

3963:                                             ; preds = %3936
  %3964 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %3965 = load <8 x double>, ptr %182, align 64, !tbaa !25
  %3966 = load <8 x double>, ptr %226, align 64, !tbaa !25
  %3967 = load <8 x double>, ptr %163, align 64, !tbaa !25
  %3968 = load <8 x double>, ptr %224, align 64, !tbaa !25
  %3969 = fdiv <8 x double> %3966, %3196
  %3970 = icmp sgt i64 %3949, 0
  br label %3971

3971:                                             ; preds = %3566, %3963
  %3972 = phi <8 x double> [ %3969, %3963 ], [ %3206, %3566 ]
  %3973 = phi i1 [ %3970, %3963 ], [ false, %3566 ]
  %3974 = phi <8 x double> [ %3968, %3963 ], [ %3185, %3566 ]
  %3975 = phi <8 x double> [ %3967, %3963 ], [ %3495, %3566 ]
  %3976 = phi <8 x double> [ %3965, %3963 ], [ %3202, %3566 ]
  %3977 = phi <8 x double> [ %3964, %3963 ], [ %3200, %3566 ]
  %3978 = load <8 x double>, ptr %159, align 64, !tbaa !25
  %3979 = fadd <8 x double> %3978, %3977
  %3980 = select <8 x i1> %3567, <8 x double> %3978, <8 x double> %3979
  store <8 x double> %3980, ptr %159, align 64, !tbaa !25
  %3981 = load <8 x double>, ptr %164, align 64, !tbaa !25
  %3982 = select <8 x i1> %3567, <8 x double> %3981, <8 x double> %3977
  store <8 x double> %3982, ptr %164, align 64, !tbaa !25
  %3983 = load <8 x double>, ptr %144, align 64, !tbaa !25
  %3984 = fadd <8 x double> %3983, splat (double 1.000000e+00)
  %3985 = select <8 x i1> %3567, <8 x double> %3983, <8 x double> %3984
  store <8 x double> %3985, ptr %144, align 64, !tbaa !25
  %3986 = load <8 x double>, ptr %146, align 64, !tbaa !25
  %3987 = fcmp olt <8 x double> %3986, %3977
  %3988 = select <8 x i1> %3567, <8 x i1> splat (i1 true), <8 x i1> %3987
  %3989 = select <8 x i1> %3988, <8 x double> %3986, <8 x double> %3977
  store <8 x double> %3989, ptr %146, align 64, !tbaa !25
  %3990 = fcmp une <8 x double> %3976, zeroinitializer
  %3991 = fcmp ueq <8 x double> %3195, zeroinitializer
  %3992 = or <8 x i1> %3991, %3990
  %3993 = fcmp olt <8 x double> %3972, splat (double 1.400000e+00)
  %3994 = select <8 x i1> %3993, <8 x double> %3972, <8 x double> splat (double 1.400000e+00)
  %3995 = select <8 x i1> %3992, <8 x double> splat (double 1.400000e+00), <8 x double> %3994
  %3996 = fcmp ogt <8 x double> %3995, splat (double 2.000000e-01)
  %3997 = select <8 x i1> %3996, <8 x double> %3995, <8 x double> splat (double 2.000000e-01)
  %3998 = fmul <8 x double> %3977, %3997
  %3999 = fmul <8 x double> %3977, splat (double 4.000000e+00)
  %4000 = fcmp olt <8 x double> %3975, %3999
  %4001 = select <8 x i1> %4000, <8 x double> %3975, <8 x double> %3999
  %4002 = fcmp ogt <8 x double> %3998, %4001
  %4003 = select <8 x i1> %4002, <8 x double> %3998, <8 x double> %4001
  %4004 = select <8 x i1> %3567, <8 x double> %3975, <8 x double> zeroinitializer
  store <8 x double> %4004, ptr %163, align 64, !tbaa !25
  %4005 = select <8 x i1> %3567, <8 x double> %3974, <8 x double> zeroinitializer
  store <8 x double> %4005, ptr %224, align 64, !tbaa !25
  %4006 = load <8 x i64>, ptr %166, align 64, !tbaa !25
  %4007 = and <8 x i64> %4006, %3595
  store <8 x i64> %4007, ptr %166, align 64, !tbaa !25
  br i1 %3973, label %4008, label %4305

4008:                                             ; preds = %3971, %4298
  %4009 = phi i64 [ %4300, %4298 ], [ 0, %3971 ]
  %4010 = phi <8 x double> [ %4299, %4298 ], [ %4003, %3971 ]
  %4011 = load ptr, ptr %150, align 8, !tbaa !27
  %4012 = getelementptr inbounds nuw %struct.Piece, ptr %4011, i64 %4009
  %4013 = getelementptr inbounds nuw i8, ptr %4012, i64 3776
  %4014 = load <8 x double>, ptr %4013, align 64, !tbaa !25
  %4015 = getelementptr inbounds nuw i8, ptr %4012, i64 1472
  %4016 = load <8 x double>, ptr %4015, align 64, !tbaa !25
  %4017 = fmul <8 x double> %4016, splat (double 1.001000e+00)
  %4018 = fcmp ole <8 x double> %4014, %4017
  %4019 = getelementptr inbounds nuw i8, ptr %4012, i64 1600
  %4020 = load <8 x double>, ptr %4019, align 64, !tbaa !25
  %4021 = getelementptr inbounds nuw i8, ptr %4012, i64 4032
  %4022 = load <8 x double>, ptr %4021, align 64, !tbaa !25
  %4023 = fsub <8 x double> %4020, %4022
  %4024 = fmul <8 x double> %4020, splat (double 1.000000e-04)
  %4025 = fcmp ole <8 x double> %4023, %4024
  %4026 = getelementptr inbounds nuw i8, ptr %4012, i64 7360
  %4027 = load <8 x i64>, ptr %4026, align 64, !tbaa !25
  %4028 = and <8 x i64> %4027, %3507
  %4029 = getelementptr inbounds nuw i8, ptr %4012, i64 7296
  %4030 = load <8 x double>, ptr %4029, align 64, !tbaa !25
  %4031 = fcmp oeq <8 x double> %4030, zeroinitializer
  %4032 = and <8 x i1> %4018, %4031
  %4033 = fcmp oeq <8 x double> %4030, splat (double 1.000000e+00)
  %4034 = and <8 x i1> %4025, %4033
  %4035 = or <8 x i1> %4032, %4034
  %4036 = select <8 x i1> %4035, <8 x i64> %4028, <8 x i64> zeroinitializer
  %4037 = fadd <8 x double> %4030, splat (double 1.000000e+00)
  %4038 = icmp eq <8 x i64> %4036, zeroinitializer
  %4039 = select <8 x i1> %4038, <8 x double> %4030, <8 x double> %4037
  store <8 x double> %4039, ptr %4029, align 64, !tbaa !25
  %4040 = getelementptr inbounds nuw i8, ptr %4012, i64 7424
  %4041 = load <8 x i64>, ptr %4040, align 64, !tbaa !25
  %4042 = or <8 x i64> %4036, %4041
  store <8 x i64> %4042, ptr %4040, align 64, !tbaa !25
  %4043 = getelementptr inbounds nuw i8, ptr %4012, i64 896
  %4044 = load <8 x double>, ptr %4043, align 64, !tbaa !25
  %4045 = getelementptr inbounds nuw i8, ptr %4012, i64 5632
  %4046 = load <8 x double>, ptr %4045, align 64, !tbaa !25
  %4047 = getelementptr inbounds nuw i8, ptr %4012, i64 5696
  %4048 = load <8 x double>, ptr %4047, align 64, !tbaa !25
  %4049 = fadd <8 x double> %4046, %4048
  %4050 = fcmp ogt <8 x double> %4049, zeroinitializer
  %4051 = xor <8 x i64> %4027, splat (i64 -1)
  %4052 = and <8 x i64> %3507, %4051
  %4053 = fcmp une <8 x double> %4044, zeroinitializer
  %4054 = or <8 x i1> %4053, %4050
  %4055 = getelementptr inbounds nuw i8, ptr %4012, i64 3840
  %4056 = load <8 x double>, ptr %4055, align 64, !tbaa !25
  %4057 = fmul <8 x double> %4044, splat (double 1.000000e-04)
  %4058 = fcmp ogt <8 x double> %4057, splat (double 0x3E7AD7F29ABCAF48)
  %4059 = select <8 x i1> %4058, <8 x double> %4057, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4060 = fcmp ole <8 x double> %4056, %4059
  %4061 = select <8 x i1> %4060, <8 x i1> %4054, <8 x i1> zeroinitializer
  %4062 = select <8 x i1> %4061, <8 x i64> %4052, <8 x i64> zeroinitializer
  %4063 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4062)
  %4064 = icmp eq i64 %4063, 0
  br i1 %4064, label %4298, label %4065

4065:                                             ; preds = %4008
  %4066 = load i64, ptr %140, align 8, !tbaa !20
  %4067 = load i64, ptr %141, align 16, !tbaa !21
  %4068 = getelementptr inbounds nuw i8, ptr %4012, i64 4416
  %4069 = load <8 x double>, ptr %4068, align 64, !tbaa !25
  %4070 = getelementptr inbounds nuw i8, ptr %4012, i64 5568
  %4071 = load <8 x double>, ptr %4070, align 64, !tbaa !25
  %4072 = getelementptr inbounds nuw i8, ptr %4012, i64 832
  %4073 = load <8 x double>, ptr %4072, align 64, !tbaa !25
  %4074 = getelementptr inbounds nuw i8, ptr %4012, i64 7600
  %4075 = load ptr, ptr %4074, align 16, !tbaa !47
  %4076 = add nsw i64 %4066, -1
  %4077 = getelementptr inbounds <8 x double>, ptr %4075, i64 %4076
  %4078 = load <8 x double>, ptr %4077, align 64, !tbaa !25
  %4079 = fmul <8 x double> %4073, %4078
  %4080 = fneg <8 x double> %4056
  %4081 = fdiv <8 x double> %4080, %4079
  %4082 = fcmp ogt <8 x double> %4081, splat (double 0x3E7AD7F29ABCAF48)
  %4083 = select <8 x i1> %4082, <8 x double> %4081, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4084 = load <8 x double>, ptr %4012, align 64, !tbaa !25
  %4085 = fsub <8 x double> %4084, %4083
  %4086 = getelementptr inbounds nuw i8, ptr %4012, i64 2560
  %4087 = load <8 x double>, ptr %4086, align 64, !tbaa !25
  %4088 = getelementptr inbounds nuw i8, ptr %4012, i64 2624
  %4089 = load <8 x double>, ptr %4088, align 64, !tbaa !25
  %4090 = getelementptr inbounds nuw i8, ptr %4012, i64 2688
  %4091 = load <8 x double>, ptr %4090, align 64, !tbaa !25
  %4092 = getelementptr inbounds nuw i8, ptr %4012, i64 2752
  %4093 = load <8 x double>, ptr %4092, align 64, !tbaa !25
  %4094 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4085, <8 x double> %4093, <8 x double> %4091)
  %4095 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4085, <8 x double> %4094, <8 x double> %4089)
  %4096 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4085, <8 x double> %4095, <8 x double> %4087)
  %4097 = getelementptr inbounds nuw i8, ptr %4012, i64 7568
  %4098 = load ptr, ptr %4097, align 16, !tbaa !46
  %4099 = getelementptr inbounds <8 x double>, ptr %4098, i64 %4076
  %4100 = load <8 x double>, ptr %4099, align 64, !tbaa !25
  %4101 = getelementptr inbounds nuw i8, ptr %4012, i64 7552
  %4102 = load i64, ptr %4101, align 64, !tbaa !30
  %4103 = icmp sgt i64 %4066, %4102
  br i1 %4103, label %4107, label %4104

4104:                                             ; preds = %4065
  %4105 = getelementptr inbounds nuw i8, ptr %4012, i64 640
  %4106 = load <8 x double>, ptr %4105, align 64, !tbaa !25
  br label %4118

4107:                                             ; preds = %4065
  %4108 = getelementptr inbounds nuw i8, ptr %4012, i64 384
  %4109 = load <8 x double>, ptr %4108, align 64, !tbaa !25
  %4110 = getelementptr inbounds nuw i8, ptr %4012, i64 448
  %4111 = load <8 x double>, ptr %4110, align 64, !tbaa !25
  %4112 = getelementptr inbounds nuw i8, ptr %4012, i64 512
  %4113 = load <8 x double>, ptr %4112, align 64, !tbaa !25
  %4114 = fmul <8 x double> %4100, %4113
  %4115 = fmul <8 x double> %4114, splat (double 0x3FD5555555555555)
  %4116 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4111, <8 x double> splat (double 5.000000e-01), <8 x double> %4115)
  %4117 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4100, <8 x double> %4116, <8 x double> %4109)
  br label %4118

4118:                                             ; preds = %4107, %4104
  %4119 = phi <8 x double> [ %4106, %4104 ], [ %4117, %4107 ]
  %4120 = fmul <8 x double> %4100, %4119
  %4121 = icmp sgt i64 %4066, 0
  br i1 %4121, label %4122, label %4132

4122:                                             ; preds = %4118
  %4123 = getelementptr inbounds nuw i8, ptr %4012, i64 640
  %4124 = getelementptr inbounds nuw i8, ptr %4012, i64 384
  %4125 = getelementptr inbounds nuw i8, ptr %4012, i64 448
  %4126 = getelementptr inbounds nuw i8, ptr %4012, i64 512
  %4127 = getelementptr inbounds nuw i8, ptr %4012, i64 1536
  %4128 = getelementptr inbounds nuw i8, ptr %4012, i64 7648
  %4129 = icmp eq <8 x i64> %4062, zeroinitializer
  br label %4144

4130:                                             ; preds = %4223
  %4131 = load <8 x double>, ptr %4012, align 64, !tbaa !25
  br label %4132

4132:                                             ; preds = %4130, %4118
  %4133 = phi <8 x double> [ %4131, %4130 ], [ %4084, %4118 ]
  %4134 = fsub <8 x double> %4133, %4085
  %4135 = sitofp i64 %4067 to double
  %4136 = insertelement <8 x double> poison, double %4135, i64 0
  %4137 = shufflevector <8 x double> %4136, <8 x double> poison, <8 x i32> zeroinitializer
  %4138 = fdiv <8 x double> %4134, %4137
  %4139 = icmp sgt i64 %4067, 0
  br i1 %4139, label %4140, label %4254

4140:                                             ; preds = %4132
  %4141 = getelementptr inbounds nuw i8, ptr %4012, i64 7736
  %4142 = icmp eq <8 x i64> %4062, zeroinitializer
  %4143 = getelementptr inbounds nuw i8, ptr %4012, i64 7688
  br label %4231

4144:                                             ; preds = %4122, %4223
  %4145 = phi <8 x double> [ %4100, %4122 ], [ %4193, %4223 ]
  %4146 = phi <8 x double> [ %4120, %4122 ], [ %4194, %4223 ]
  %4147 = phi <8 x double> [ %4096, %4122 ], [ %4192, %4223 ]
  %4148 = phi i64 [ %4076, %4122 ], [ %4229, %4223 ]
  %4149 = icmp eq i64 %4148, 0
  br i1 %4149, label %4191, label %4150

4150:                                             ; preds = %4144
  %4151 = load ptr, ptr %4097, align 16, !tbaa !46
  %4152 = getelementptr <8 x double>, ptr %4151, i64 %4148
  %4153 = getelementptr i8, ptr %4152, i64 -64
  %4154 = load <8 x double>, ptr %4153, align 64, !tbaa !25
  %4155 = load i64, ptr %4101, align 64, !tbaa !30
  %4156 = icmp sgt i64 %4148, %4155
  br i1 %4156, label %4159, label %4157

4157:                                             ; preds = %4150
  %4158 = load <8 x double>, ptr %4123, align 64, !tbaa !25
  br label %4167

4159:                                             ; preds = %4150
  %4160 = load <8 x double>, ptr %4124, align 64, !tbaa !25
  %4161 = load <8 x double>, ptr %4125, align 64, !tbaa !25
  %4162 = load <8 x double>, ptr %4126, align 64, !tbaa !25
  %4163 = fmul <8 x double> %4154, %4162
  %4164 = fmul <8 x double> %4163, splat (double 0x3FD5555555555555)
  %4165 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4161, <8 x double> splat (double 5.000000e-01), <8 x double> %4164)
  %4166 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4154, <8 x double> %4165, <8 x double> %4160)
  br label %4167

4167:                                             ; preds = %4157, %4159
  %4168 = phi <8 x double> [ %4166, %4159 ], [ %4158, %4157 ]
  %4169 = fmul <8 x double> %4154, %4168
  %4170 = icmp slt i64 %4148, %4155
  br i1 %4170, label %4171, label %4178

4171:                                             ; preds = %4167
  %4172 = load ptr, ptr %4128, align 32, !tbaa !71
  %4173 = getelementptr inbounds nuw <8 x double>, ptr %4172, i64 %4148
  %4174 = load <8 x double>, ptr %4173, align 64, !tbaa !25
  %4175 = load <8 x double>, ptr %4127, align 64, !tbaa !25
  %4176 = fmul <8 x double> %4174, %4175
  %4177 = fmul <8 x double> %4174, %4175
  br label %4187

4178:                                             ; preds = %4167
  %4179 = load <8 x double>, ptr %4127, align 64, !tbaa !25
  %4180 = load ptr, ptr %4128, align 32, !tbaa !71
  %4181 = getelementptr inbounds nuw <8 x double>, ptr %4180, i64 %4148
  %4182 = load <8 x double>, ptr %4181, align 64, !tbaa !25
  %4183 = fsub <8 x double> %4096, %4179
  %4184 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4182, <8 x double> %4183, <8 x double> %4179)
  %4185 = fsub <8 x double> %4069, %4179
  %4186 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4182, <8 x double> %4185, <8 x double> %4179)
  br label %4187

4187:                                             ; preds = %4178, %4171
  %4188 = phi <8 x double> [ %4176, %4171 ], [ %4184, %4178 ]
  %4189 = phi <8 x double> [ %4177, %4171 ], [ %4186, %4178 ]
  %4190 = fsub <8 x double> %4189, %4188
  br label %4191

4191:                                             ; preds = %4144, %4187
  %4192 = phi <8 x double> [ %4188, %4187 ], [ zeroinitializer, %4144 ]
  %4193 = phi <8 x double> [ %4154, %4187 ], [ %4145, %4144 ]
  %4194 = phi <8 x double> [ %4169, %4187 ], [ %4146, %4144 ]
  %4195 = phi <8 x double> [ %4190, %4187 ], [ zeroinitializer, %4144 ]
  %4196 = fsub <8 x double> %4147, %4192
  %4197 = fdiv <8 x double> %4195, %4196
  %4198 = fsub <8 x double> %4194, %4146
  %4199 = fmul <8 x double> %4198, %4197
  %4200 = load ptr, ptr %4074, align 16, !tbaa !47
  %4201 = getelementptr inbounds nuw <8 x double>, ptr %4200, i64 %4148
  %4202 = load <8 x double>, ptr %4201, align 64, !tbaa !25
  br i1 %4149, label %4206, label %4203

4203:                                             ; preds = %4191
  %4204 = getelementptr i8, ptr %4201, i64 -64
  %4205 = load <8 x double>, ptr %4204, align 64, !tbaa !25
  br label %4206

4206:                                             ; preds = %4203, %4191
  %4207 = phi <8 x double> [ %4205, %4203 ], [ %4202, %4191 ]
  %4208 = fsub <8 x double> %4207, %4202
  %4209 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4208, <8 x double> %4197, <8 x double> %4202)
  %4210 = select <8 x i1> %4129, <8 x double> %4202, <8 x double> %4209
  store <8 x double> %4210, ptr %4201, align 64, !tbaa !25
  %4211 = load ptr, ptr %4097, align 16, !tbaa !46
  %4212 = getelementptr inbounds nuw <8 x double>, ptr %4211, i64 %4148
  %4213 = load i64, ptr %4101, align 64, !tbaa !30
  %4214 = icmp slt i64 %4148, %4213
  br i1 %4214, label %4215, label %4217

4215:                                             ; preds = %4206
  %4216 = load <8 x double>, ptr %4123, align 64, !tbaa !25
  br label %4223

4217:                                             ; preds = %4206
  %4218 = load <8 x double>, ptr %4124, align 64, !tbaa !25
  %4219 = load <8 x double>, ptr %4125, align 64, !tbaa !25
  %4220 = load <8 x double>, ptr %4126, align 64, !tbaa !25
  %4221 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4145, <8 x double> %4220, <8 x double> %4219)
  %4222 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4145, <8 x double> %4221, <8 x double> %4218)
  br label %4223

4223:                                             ; preds = %4217, %4215
  %4224 = phi <8 x double> [ %4216, %4215 ], [ %4222, %4217 ]
  %4225 = fdiv <8 x double> %4199, %4224
  %4226 = fadd <8 x double> %4145, %4225
  %4227 = load <8 x double>, ptr %4212, align 64, !tbaa !25
  %4228 = select <8 x i1> %4129, <8 x double> %4227, <8 x double> %4226
  store <8 x double> %4228, ptr %4212, align 64, !tbaa !25
  %4229 = add nsw i64 %4148, -1
  %4230 = icmp sgt i64 %4148, 0
  br i1 %4230, label %4144, label %4130, !llvm.loop !130

4231:                                             ; preds = %4140, %4231
  %4232 = phi i64 [ 0, %4140 ], [ %4252, %4231 ]
  %4233 = load ptr, ptr %4141, align 8, !tbaa !49
  %4234 = getelementptr inbounds nuw <8 x double>, ptr %4233, i64 %4232
  %4235 = uitofp nneg i64 %4232 to double
  %4236 = insertelement <8 x double> poison, double %4235, i64 0
  %4237 = shufflevector <8 x double> %4236, <8 x double> poison, <8 x i32> zeroinitializer
  %4238 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4237, <8 x double> %4138, <8 x double> %4085)
  %4239 = load <8 x double>, ptr %4086, align 64, !tbaa !25
  %4240 = load <8 x double>, ptr %4088, align 64, !tbaa !25
  %4241 = load <8 x double>, ptr %4090, align 64, !tbaa !25
  %4242 = load <8 x double>, ptr %4092, align 64, !tbaa !25
  %4243 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4238, <8 x double> %4242, <8 x double> %4241)
  %4244 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4238, <8 x double> %4243, <8 x double> %4240)
  %4245 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4238, <8 x double> %4244, <8 x double> %4239)
  %4246 = load <8 x double>, ptr %4234, align 64, !tbaa !25
  %4247 = select <8 x i1> %4142, <8 x double> %4246, <8 x double> %4245
  store <8 x double> %4247, ptr %4234, align 64, !tbaa !25
  %4248 = load ptr, ptr %4143, align 8, !tbaa !50
  %4249 = getelementptr inbounds nuw <8 x double>, ptr %4248, i64 %4232
  %4250 = load <8 x double>, ptr %4249, align 64, !tbaa !25
  %4251 = select <8 x i1> %4142, <8 x double> %4250, <8 x double> %4071
  store <8 x double> %4251, ptr %4249, align 64, !tbaa !25
  %4252 = add nuw nsw i64 %4232, 1
  %4253 = icmp eq i64 %4252, %4067
  br i1 %4253, label %4254, label %4231, !llvm.loop !131

4254:                                             ; preds = %4231, %4132
  %4255 = fsub <8 x double> %4069, %4096
  %4256 = getelementptr inbounds nuw i8, ptr %4012, i64 3712
  %4257 = getelementptr inbounds nuw i8, ptr %4012, i64 7736
  %4258 = load ptr, ptr %4257, align 8, !tbaa !49
  %4259 = getelementptr inbounds <8 x double>, ptr %4258, i64 %4067
  %4260 = getelementptr inbounds nuw i8, ptr %4012, i64 1408
  %4261 = load <8 x double>, ptr %4260, align 64, !tbaa !25
  %4262 = load <8 x double>, ptr %4259, align 64, !tbaa !25
  %4263 = icmp eq <8 x i64> %4062, zeroinitializer
  %4264 = select <8 x i1> %4263, <8 x double> %4262, <8 x double> %4261
  store <8 x double> %4264, ptr %4259, align 64, !tbaa !25
  %4265 = load <8 x double>, ptr %4256, align 64, !tbaa !25
  %4266 = select <8 x i1> %4263, <8 x double> %4265, <8 x double> %4085
  store <8 x double> %4266, ptr %4256, align 64, !tbaa !25
  %4267 = load <8 x double>, ptr %4013, align 64, !tbaa !25
  %4268 = select <8 x i1> %4263, <8 x double> %4267, <8 x double> %4096
  store <8 x double> %4268, ptr %4013, align 64, !tbaa !25
  %4269 = load <8 x double>, ptr %4068, align 64, !tbaa !25
  %4270 = select <8 x i1> %4263, <8 x double> %4269, <8 x double> %4096
  store <8 x double> %4270, ptr %4068, align 64, !tbaa !25
  %4271 = getelementptr inbounds nuw i8, ptr %4012, i64 3904
  %4272 = load <8 x double>, ptr %4271, align 64, !tbaa !25
  %4273 = fneg <8 x double> %4255
  %4274 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4273, <8 x double> %4079, <8 x double> %4272)
  %4275 = select <8 x i1> %4263, <8 x double> %4272, <8 x double> %4274
  store <8 x double> %4275, ptr %4271, align 64, !tbaa !25
  %4276 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4255, <8 x double> %4079, <8 x double> %4056)
  %4277 = load <8 x double>, ptr %4055, align 64, !tbaa !25
  %4278 = select <8 x i1> %4263, <8 x double> %4277, <8 x double> %4276
  store <8 x double> %4278, ptr %4055, align 64, !tbaa !25
  %4279 = getelementptr inbounds nuw i8, ptr %4012, i64 4160
  %4280 = load <8 x double>, ptr %4279, align 64, !tbaa !25
  %4281 = getelementptr inbounds nuw i8, ptr %4012, i64 768
  %4282 = load <8 x double>, ptr %4281, align 64, !tbaa !25
  %4283 = fneg <8 x double> %4282
  %4284 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4283, <8 x double> %4071, <8 x double> %4120)
  %4285 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4255, <8 x double> %4284, <8 x double> %4280)
  %4286 = select <8 x i1> %4263, <8 x double> %4280, <8 x double> %4285
  store <8 x double> %4286, ptr %4279, align 64, !tbaa !25
  %4287 = load <8 x i64>, ptr %4026, align 64, !tbaa !25
  %4288 = or <8 x i64> %4287, %4062
  store <8 x i64> %4288, ptr %4026, align 64, !tbaa !25
  %4289 = load <8 x i64>, ptr %4040, align 64, !tbaa !25
  %4290 = or <8 x i64> %4289, %4062
  store <8 x i64> %4290, ptr %4040, align 64, !tbaa !25
  %4291 = load <8 x double>, ptr %231, align 64, !tbaa !25
  %4292 = fmul <8 x double> %4291, splat (double 5.000000e+00)
  %4293 = fcmp olt <8 x double> %4010, %4292
  %4294 = select <8 x i1> %4293, <8 x double> %4010, <8 x double> %4292
  %4295 = icmp ne <8 x i64> %4062, zeroinitializer
  %4296 = select <8 x i1> %4053, <8 x i1> %4295, <8 x i1> zeroinitializer
  %4297 = select <8 x i1> %4296, <8 x double> %4294, <8 x double> %4010
  br label %4298

4298:                                             ; preds = %4254, %4008
  %4299 = phi <8 x double> [ %4297, %4254 ], [ %4010, %4008 ]
  %4300 = add nuw nsw i64 %4009, 1
  %4301 = load i64, ptr %149, align 64, !tbaa !16
  %4302 = icmp slt i64 %4300, %4301
  br i1 %4302, label %4008, label %4303, !llvm.loop !132

4303:                                             ; preds = %4298
  %4304 = load <8 x double>, ptr %159, align 64, !tbaa !25
  br label %4305

4305:                                             ; preds = %4303, %3971
  %4306 = phi <8 x double> [ %3980, %3971 ], [ %4304, %4303 ]
  %4307 = phi <8 x double> [ %4003, %3971 ], [ %4299, %4303 ]
  %4308 = load <8 x double>, ptr %155, align 64, !tbaa !25
  %4309 = select <8 x i1> %3567, <8 x double> %4308, <8 x double> %4307
  store <8 x double> %4309, ptr %155, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %3507, ptr %13, align 64, !tbaa !25
  %4310 = load ptr, ptr %232, align 64, !tbaa !37
  %4311 = getelementptr inbounds nuw i8, ptr %4310, i64 64
  store <8 x double> %4306, ptr %4310, align 64, !tbaa !25
  %4312 = load <8 x double>, ptr %233, align 64, !tbaa !25
  %4313 = getelementptr inbounds nuw i8, ptr %4310, i64 128
  store <8 x double> %4312, ptr %4311, align 64, !tbaa !25
  %4314 = load <8 x double>, ptr %195, align 64, !tbaa !25
  %4315 = getelementptr inbounds nuw i8, ptr %4310, i64 192
  store <8 x double> %4314, ptr %4313, align 64, !tbaa !25
  %4316 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %4317 = getelementptr inbounds nuw i8, ptr %4310, i64 256
  store <8 x double> %4316, ptr %4315, align 64, !tbaa !25
  %4318 = load i64, ptr %149, align 64, !tbaa !16
  %4319 = icmp sgt i64 %4318, 0
  br i1 %4319, label %4324, label %4320

4320:                                             ; preds = %4324, %4305
  %4321 = phi ptr [ %4317, %4305 ], [ %4330, %4324 ]
  %4322 = load i64, ptr %234, align 8, !tbaa !133
  %4323 = icmp eq i64 %4322, 0
  br i1 %4323, label %4459, label %4334

4324:                                             ; preds = %4305, %4324
  %4325 = phi ptr [ %4330, %4324 ], [ %4317, %4305 ]
  %4326 = phi i64 [ %4331, %4324 ], [ 0, %4305 ]
  %4327 = load ptr, ptr %150, align 8, !tbaa !27
  %4328 = getelementptr inbounds nuw %struct.Piece, ptr %4327, i64 %4326, i32 35
  %4329 = load <8 x double>, ptr %4328, align 64, !tbaa !25
  %4330 = getelementptr inbounds nuw i8, ptr %4325, i64 64
  store <8 x double> %4329, ptr %4325, align 64, !tbaa !25
  %4331 = add nuw nsw i64 %4326, 1
  %4332 = load i64, ptr %149, align 64, !tbaa !16
  %4333 = icmp slt i64 %4331, %4332
  br i1 %4333, label %4324, label %4320, !llvm.loop !134

4334:                                             ; preds = %4320
  %4335 = load <8 x double>, ptr %216, align 64, !tbaa !25
  %4336 = getelementptr inbounds nuw i8, ptr %4321, i64 64
  store <8 x double> %4335, ptr %4321, align 64, !tbaa !25
  %4337 = load <8 x double>, ptr %188, align 64, !tbaa !25
  %4338 = getelementptr inbounds nuw i8, ptr %4321, i64 128
  store <8 x double> %4337, ptr %4336, align 64, !tbaa !25
  %4339 = load <8 x double>, ptr %195, align 64, !tbaa !25
  %4340 = load <8 x double>, ptr %205, align 64, !tbaa !25
  %4341 = fsub <8 x double> %4339, %4340
  %4342 = fcmp ogt <8 x double> %4341, zeroinitializer
  %4343 = select <8 x i1> %4342, <8 x double> %4341, <8 x double> zeroinitializer
  store <8 x double> %4343, ptr %4338, align 64, !tbaa !25
  %4344 = load i64, ptr %149, align 64, !tbaa !16
  %4345 = icmp sgt i64 %4344, 0
  br i1 %4345, label %4346, label %4459

4346:                                             ; preds = %4334
  %4347 = getelementptr inbounds nuw i8, ptr %4321, i64 192
  br label %4348

4348:                                             ; preds = %4346, %4348
  %4349 = phi ptr [ %4455, %4348 ], [ %4347, %4346 ]
  %4350 = phi i64 [ %4456, %4348 ], [ 0, %4346 ]
  %4351 = load ptr, ptr %150, align 8, !tbaa !27
  %4352 = getelementptr inbounds nuw %struct.Piece, ptr %4351, i64 %4350
  %4353 = getelementptr inbounds nuw i8, ptr %4352, i64 7568
  %4354 = load ptr, ptr %4353, align 16, !tbaa !46
  %4355 = load i64, ptr %140, align 8, !tbaa !20
  %4356 = getelementptr <8 x double>, ptr %4354, i64 %4355
  %4357 = getelementptr i8, ptr %4356, i64 -64
  %4358 = load <8 x double>, ptr %4357, align 64, !tbaa !25
  %4359 = getelementptr inbounds nuw i8, ptr %4352, i64 6848
  %4360 = load <8 x double>, ptr %4359, align 64, !tbaa !25
  %4361 = getelementptr inbounds nuw i8, ptr %4352, i64 5568
  %4362 = load <8 x double>, ptr %4361, align 64, !tbaa !25
  %4363 = fsub <8 x double> %4362, %4358
  %4364 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4360, <8 x double> %4363, <8 x double> %4358)
  %4365 = getelementptr inbounds nuw i8, ptr %4349, i64 64
  store <8 x double> %4364, ptr %4349, align 64, !tbaa !25
  %4366 = getelementptr inbounds nuw i8, ptr %4352, i64 6400
  %4367 = load <8 x double>, ptr %4366, align 64, !tbaa !25
  %4368 = getelementptr inbounds nuw i8, ptr %4349, i64 128
  store <8 x double> %4367, ptr %4365, align 64, !tbaa !25
  %4369 = load <8 x double>, ptr %4352, align 64, !tbaa !25
  %4370 = getelementptr inbounds nuw i8, ptr %4352, i64 3712
  %4371 = load <8 x double>, ptr %4370, align 64, !tbaa !25
  %4372 = fsub <8 x double> %4369, %4371
  %4373 = getelementptr inbounds nuw i8, ptr %4349, i64 192
  store <8 x double> %4372, ptr %4368, align 64, !tbaa !25
  %4374 = getelementptr inbounds nuw i8, ptr %4352, i64 4032
  %4375 = load <8 x double>, ptr %4374, align 64, !tbaa !25
  %4376 = getelementptr inbounds nuw i8, ptr %4349, i64 256
  store <8 x double> %4375, ptr %4373, align 64, !tbaa !25
  %4377 = getelementptr inbounds nuw i8, ptr %4352, i64 3968
  %4378 = load <8 x double>, ptr %4377, align 64, !tbaa !25
  %4379 = getelementptr inbounds nuw i8, ptr %4349, i64 320
  store <8 x double> %4378, ptr %4376, align 64, !tbaa !25
  %4380 = getelementptr inbounds nuw i8, ptr %4352, i64 3840
  %4381 = load <8 x double>, ptr %4380, align 64, !tbaa !25
  %4382 = getelementptr inbounds nuw i8, ptr %4349, i64 384
  store <8 x double> %4381, ptr %4379, align 64, !tbaa !25
  %4383 = getelementptr inbounds nuw i8, ptr %4352, i64 4096
  %4384 = load <8 x double>, ptr %4383, align 64, !tbaa !25
  %4385 = getelementptr inbounds nuw i8, ptr %4349, i64 448
  store <8 x double> %4384, ptr %4382, align 64, !tbaa !25
  %4386 = getelementptr inbounds nuw i8, ptr %4352, i64 7688
  %4387 = load i64, ptr %141, align 16, !tbaa !21
  %4388 = sitofp i64 %4387 to double
  %4389 = tail call double @llvm.fmuladd.f64(double %4388, double 7.500000e-01, double -5.000000e-01)
  %4390 = fcmp ogt double %4389, 0.000000e+00
  %4391 = select i1 %4390, double %4389, double 0.000000e+00
  %4392 = fptosi double %4391 to i64
  %4393 = add nsw i64 %4387, -2
  %4394 = tail call i64 @llvm.smin.i64(i64 %4393, i64 %4392)
  %4395 = sitofp i64 %4394 to double
  %4396 = fsub double %4389, %4395
  %4397 = fsub double 1.000000e+00, %4396
  %4398 = insertelement <8 x double> poison, double %4397, i64 0
  %4399 = shufflevector <8 x double> %4398, <8 x double> poison, <8 x i32> zeroinitializer
  %4400 = load ptr, ptr %4386, align 8, !tbaa !50
  %4401 = getelementptr inbounds <8 x double>, ptr %4400, i64 %4394
  %4402 = load <8 x double>, ptr %4401, align 64, !tbaa !25
  %4403 = insertelement <8 x double> poison, double %4396, i64 0
  %4404 = shufflevector <8 x double> %4403, <8 x double> poison, <8 x i32> zeroinitializer
  %4405 = getelementptr i8, ptr %4401, i64 64
  %4406 = load <8 x double>, ptr %4405, align 64, !tbaa !25
  %4407 = fmul <8 x double> %4406, %4404
  %4408 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4399, <8 x double> %4402, <8 x double> %4407)
  store <8 x double> %4408, ptr %4385, align 64, !tbaa !25
  %4409 = load i64, ptr %141, align 16, !tbaa !21
  %4410 = sitofp i64 %4409 to double
  %4411 = tail call double @llvm.fmuladd.f64(double %4410, double 5.000000e-01, double -5.000000e-01)
  %4412 = fcmp ogt double %4411, 0.000000e+00
  %4413 = select i1 %4412, double %4411, double 0.000000e+00
  %4414 = fptosi double %4413 to i64
  %4415 = add nsw i64 %4409, -2
  %4416 = tail call i64 @llvm.smin.i64(i64 %4415, i64 %4414)
  %4417 = sitofp i64 %4416 to double
  %4418 = fsub double %4411, %4417
  %4419 = fsub double 1.000000e+00, %4418
  %4420 = insertelement <8 x double> poison, double %4419, i64 0
  %4421 = shufflevector <8 x double> %4420, <8 x double> poison, <8 x i32> zeroinitializer
  %4422 = load ptr, ptr %4386, align 8, !tbaa !50
  %4423 = getelementptr inbounds <8 x double>, ptr %4422, i64 %4416
  %4424 = load <8 x double>, ptr %4423, align 64, !tbaa !25
  %4425 = insertelement <8 x double> poison, double %4418, i64 0
  %4426 = shufflevector <8 x double> %4425, <8 x double> poison, <8 x i32> zeroinitializer
  %4427 = getelementptr i8, ptr %4423, i64 64
  %4428 = load <8 x double>, ptr %4427, align 64, !tbaa !25
  %4429 = fmul <8 x double> %4428, %4426
  %4430 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4421, <8 x double> %4424, <8 x double> %4429)
  %4431 = getelementptr inbounds nuw i8, ptr %4349, i64 512
  store <8 x double> %4430, ptr %4431, align 64, !tbaa !25
  %4432 = load i64, ptr %141, align 16, !tbaa !21
  %4433 = sitofp i64 %4432 to double
  %4434 = tail call double @llvm.fmuladd.f64(double %4433, double 2.500000e-01, double -5.000000e-01)
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
  %4445 = load ptr, ptr %4386, align 8, !tbaa !50
  %4446 = getelementptr inbounds <8 x double>, ptr %4445, i64 %4439
  %4447 = load <8 x double>, ptr %4446, align 64, !tbaa !25
  %4448 = insertelement <8 x double> poison, double %4441, i64 0
  %4449 = shufflevector <8 x double> %4448, <8 x double> poison, <8 x i32> zeroinitializer
  %4450 = getelementptr i8, ptr %4446, i64 64
  %4451 = load <8 x double>, ptr %4450, align 64, !tbaa !25
  %4452 = fmul <8 x double> %4451, %4449
  %4453 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4444, <8 x double> %4447, <8 x double> %4452)
  %4454 = getelementptr inbounds nuw i8, ptr %4349, i64 576
  store <8 x double> %4453, ptr %4454, align 64, !tbaa !25
  %4455 = getelementptr inbounds nuw i8, ptr %4349, i64 640
  %4456 = add nuw nsw i64 %4350, 1
  %4457 = load i64, ptr %149, align 64, !tbaa !16
  %4458 = icmp slt i64 %4456, %4457
  br i1 %4458, label %4348, label %4459, !llvm.loop !135

4459:                                             ; preds = %4348, %4334, %4320
  br label %4460

4460:                                             ; preds = %4459, %4536
  %4461 = phi i64 [ %4537, %4536 ], [ 0, %4459 ]
  %4462 = getelementptr inbounds nuw i64, ptr %13, i64 %4461
  %4463 = load i64, ptr %4462, align 8, !tbaa !29
  %4464 = icmp eq i64 %4463, 0
  br i1 %4464, label %4536, label %4465

4465:                                             ; preds = %4460
  %4466 = getelementptr inbounds nuw [8 x i64], ptr %235, i64 0, i64 %4461
  %4467 = load i64, ptr %4466, align 8, !tbaa !29
  %4468 = load i64, ptr %236, align 8, !tbaa !136
  %4469 = icmp eq i64 %4467, %4468
  br i1 %4469, label %4473, label %4470

4470:                                             ; preds = %4465
  %4471 = getelementptr inbounds nuw [8 x ptr], ptr %240, i64 0, i64 %4461
  %4472 = load ptr, ptr %4471, align 8, !tbaa !137
  br label %4488

4473:                                             ; preds = %4465
  %4474 = getelementptr inbounds nuw [8 x i64], ptr %142, i64 0, i64 %4461
  %4475 = load i64, ptr %4474, align 8, !tbaa !29
  %4476 = load ptr, ptr %237, align 8, !tbaa !138
  %4477 = load i64, ptr %133, align 8, !tbaa !41
  %4478 = getelementptr inbounds i64, ptr %4476, i64 %4477
  store i64 %4475, ptr %4478, align 8, !tbaa !29
  %4479 = load ptr, ptr %238, align 8, !tbaa !139
  %4480 = load i64, ptr %133, align 8, !tbaa !41
  %4481 = add nsw i64 %4480, 1
  store i64 %4481, ptr %133, align 8, !tbaa !41
  %4482 = load i64, ptr %236, align 8, !tbaa !136
  %4483 = mul nsw i64 %4482, %4480
  %4484 = load i64, ptr %239, align 8, !tbaa !15
  %4485 = mul nsw i64 %4483, %4484
  %4486 = getelementptr inbounds double, ptr %4479, i64 %4485
  %4487 = getelementptr inbounds nuw [8 x ptr], ptr %240, i64 0, i64 %4461
  store ptr %4486, ptr %4487, align 8, !tbaa !137
  br label %4488

4488:                                             ; preds = %4470, %4473
  %4489 = phi i64 [ %4467, %4470 ], [ 0, %4473 ]
  %4490 = phi ptr [ %4472, %4470 ], [ %4486, %4473 ]
  %4491 = add nsw i64 %4489, 1
  store i64 %4491, ptr %4466, align 8, !tbaa !29
  %4492 = load i64, ptr %239, align 8, !tbaa !15
  %4493 = mul nsw i64 %4492, %4489
  %4494 = getelementptr inbounds double, ptr %4490, i64 %4493
  %4495 = icmp sgt i64 %4492, 0
  br i1 %4495, label %4496, label %4536

4496:                                             ; preds = %4488
  %4497 = load ptr, ptr %232, align 64, !tbaa !37
  %4498 = getelementptr inbounds nuw double, ptr %4497, i64 %4461
  %4499 = and i64 %4492, 3
  %4500 = icmp ult i64 %4492, 4
  br i1 %4500, label %4524, label %4501

4501:                                             ; preds = %4496
  %4502 = and i64 %4492, 9223372036854775804
  br label %4503

4503:                                             ; preds = %4503, %4501
  %4504 = phi i64 [ 0, %4501 ], [ %4521, %4503 ]
  %4505 = phi i64 [ 0, %4501 ], [ %4522, %4503 ]
  %4506 = getelementptr inbounds nuw <8 x double>, ptr %4498, i64 %4504
  %4507 = load double, ptr %4506, align 8, !tbaa !42
  %4508 = getelementptr inbounds nuw double, ptr %4494, i64 %4504
  store double %4507, ptr %4508, align 8, !tbaa !42
  %4509 = or disjoint i64 %4504, 1
  %4510 = getelementptr inbounds nuw <8 x double>, ptr %4498, i64 %4509
  %4511 = load double, ptr %4510, align 8, !tbaa !42
  %4512 = getelementptr inbounds nuw double, ptr %4494, i64 %4509
  store double %4511, ptr %4512, align 8, !tbaa !42
  %4513 = or disjoint i64 %4504, 2
  %4514 = getelementptr inbounds nuw <8 x double>, ptr %4498, i64 %4513
  %4515 = load double, ptr %4514, align 8, !tbaa !42
  %4516 = getelementptr inbounds nuw double, ptr %4494, i64 %4513
  store double %4515, ptr %4516, align 8, !tbaa !42
  %4517 = or disjoint i64 %4504, 3
  %4518 = getelementptr inbounds nuw <8 x double>, ptr %4498, i64 %4517
  %4519 = load double, ptr %4518, align 8, !tbaa !42
  %4520 = getelementptr inbounds nuw double, ptr %4494, i64 %4517
  store double %4519, ptr %4520, align 8, !tbaa !42
  %4521 = add nuw nsw i64 %4504, 4
  %4522 = add i64 %4505, 4
  %4523 = icmp eq i64 %4522, %4502
  br i1 %4523, label %4524, label %4503, !llvm.loop !140

4524:                                             ; preds = %4503, %4496
  %4525 = phi i64 [ 0, %4496 ], [ %4521, %4503 ]
  %4526 = icmp eq i64 %4499, 0
  br i1 %4526, label %4536, label %4527

4527:                                             ; preds = %4524, %4527
  %4528 = phi i64 [ %4533, %4527 ], [ %4525, %4524 ]
  %4529 = phi i64 [ %4534, %4527 ], [ 0, %4524 ]
  %4530 = getelementptr inbounds nuw <8 x double>, ptr %4498, i64 %4528
  %4531 = load double, ptr %4530, align 8, !tbaa !42
  %4532 = getelementptr inbounds nuw double, ptr %4494, i64 %4528
  store double %4531, ptr %4532, align 8, !tbaa !42
  %4533 = add nuw nsw i64 %4528, 1
  %4534 = add i64 %4529, 1
  %4535 = icmp eq i64 %4534, %4499
  br i1 %4535, label %4536, label %4527, !llvm.loop !141

4536:                                             ; preds = %4524, %4527, %4488, %4460
  %4537 = add nuw nsw i64 %4461, 1
  %4538 = icmp eq i64 %4537, 8
  br i1 %4538, label %4539, label %4460, !llvm.loop !143

4539:                                             ; preds = %4536
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %4540 = load <8 x double>, ptr %159, align 64, !tbaa !25
  %4541 = load <8 x double>, ptr %161, align 64, !tbaa !25
  %4542 = fsub <8 x double> %4540, %4541
  %4543 = load <8 x double>, ptr %162, align 64, !tbaa !25
  %4544 = fadd <8 x double> %4543, splat (double -1.000000e-09)
  %4545 = fcmp oge <8 x double> %4542, %4544
  %4546 = select <8 x i1> %4545, <8 x i64> %3507, <8 x i64> zeroinitializer
  %4547 = load i64, ptr %149, align 64, !tbaa !16
  %4548 = icmp sgt i64 %4547, 0
  br i1 %4548, label %4549, label %4581

4549:                                             ; preds = %4539
  %4550 = load ptr, ptr %150, align 8, !tbaa !27
  %4551 = and i64 %4547, 1
  %4552 = icmp eq i64 %4547, 1
  br i1 %4552, label %4571, label %4553

4553:                                             ; preds = %4549
  %4554 = and i64 %4547, 9223372036854775806
  br label %4555

4555:                                             ; preds = %4555, %4553
  %4556 = phi i64 [ 0, %4553 ], [ %4568, %4555 ]
  %4557 = phi <8 x double> [ splat (double 1.000000e+09), %4553 ], [ %4567, %4555 ]
  %4558 = phi i64 [ 0, %4553 ], [ %4569, %4555 ]
  %4559 = getelementptr inbounds nuw %struct.Piece, ptr %4550, i64 %4556, i32 35
  %4560 = load <8 x double>, ptr %4559, align 64, !tbaa !25
  %4561 = fcmp olt <8 x double> %4557, %4560
  %4562 = select <8 x i1> %4561, <8 x double> %4557, <8 x double> %4560
  %4563 = or disjoint i64 %4556, 1
  %4564 = getelementptr inbounds nuw %struct.Piece, ptr %4550, i64 %4563, i32 35
  %4565 = load <8 x double>, ptr %4564, align 64, !tbaa !25
  %4566 = fcmp olt <8 x double> %4562, %4565
  %4567 = select <8 x i1> %4566, <8 x double> %4562, <8 x double> %4565
  %4568 = add nuw nsw i64 %4556, 2
  %4569 = add i64 %4558, 2
  %4570 = icmp eq i64 %4569, %4554
  br i1 %4570, label %4571, label %4555, !llvm.loop !118

4571:                                             ; preds = %4555, %4549
  %4572 = phi <8 x double> [ poison, %4549 ], [ %4567, %4555 ]
  %4573 = phi i64 [ 0, %4549 ], [ %4568, %4555 ]
  %4574 = phi <8 x double> [ splat (double 1.000000e+09), %4549 ], [ %4567, %4555 ]
  %4575 = icmp eq i64 %4551, 0
  br i1 %4575, label %4581, label %4576

4576:                                             ; preds = %4571
  %4577 = getelementptr inbounds nuw %struct.Piece, ptr %4550, i64 %4573, i32 35
  %4578 = load <8 x double>, ptr %4577, align 64, !tbaa !25
  %4579 = fcmp olt <8 x double> %4574, %4578
  %4580 = select <8 x i1> %4579, <8 x double> %4574, <8 x double> %4578
  br label %4581

4581:                                             ; preds = %4576, %4571, %4539
  %4582 = phi <8 x double> [ splat (double 1.000000e+09), %4539 ], [ %4572, %4571 ], [ %4580, %4576 ]
  %4583 = load <8 x double>, ptr %228, align 64, !tbaa !25
  %4584 = select <8 x i1> %3567, <8 x double> %4583, <8 x double> %4582
  store <8 x double> %4584, ptr %228, align 64, !tbaa !25
  %4585 = load <8 x double>, ptr %229, align 64, !tbaa !25
  %4586 = fcmp une <8 x double> %4585, zeroinitializer
  %4587 = load <8 x double>, ptr %195, align 64, !tbaa !25
  %4588 = load <8 x double>, ptr %186, align 64, !tbaa !25
  %4589 = fsub <8 x double> %4587, %4588
  %4590 = fcmp une <8 x double> %4585, splat (double 1.000000e+00)
  %4591 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %4592 = load <8 x double>, ptr %230, align 64, !tbaa !25
  %4593 = fsub <8 x double> %4591, %4592
  %4594 = select <8 x i1> %4590, <8 x double> splat (double -1.000000e+00), <8 x double> %4593
  %4595 = fcmp une <8 x double> %4585, splat (double 2.000000e+00)
  %4596 = fsub <8 x double> %4584, %4592
  %4597 = select <8 x i1> %4595, <8 x double> %4594, <8 x double> %4596
  %4598 = fcmp une <8 x double> %4585, splat (double 3.000000e+00)
  %4599 = fsub <8 x double> %4589, %4592
  %4600 = select <8 x i1> %4598, <8 x double> %4597, <8 x double> %4599
  %4601 = fcmp une <8 x double> %4585, splat (double 4.000000e+00)
  %4602 = fsub <8 x double> %4592, %4589
  %4603 = select <8 x i1> %4601, <8 x double> %4600, <8 x double> %4602
  %4604 = fcmp oge <8 x double> %4603, splat (double 0xBEB0C6F7A0B5ED8D)
  %4605 = select <8 x i1> %4604, <8 x i1> %4586, <8 x i1> zeroinitializer
  %4606 = select <8 x i1> %4605, <8 x i64> %3507, <8 x i64> zeroinitializer
  %4607 = xor <8 x i64> %4606, splat (i64 -1)
  %4608 = and <8 x i64> %4546, %4607
  %4609 = load <8 x double>, ptr %147, align 64, !tbaa !25
  %4610 = icmp ne <8 x i64> %4608, zeroinitializer
  %4611 = select <8 x i1> %4586, <8 x i1> %4610, <8 x i1> zeroinitializer
  %4612 = select <8 x i1> %4611, <8 x double> splat (double 2.000000e+00), <8 x double> %4609
  store <8 x double> %4612, ptr %147, align 64, !tbaa !25
  %4613 = or <8 x i64> %4606, %4546
  %4614 = load <8 x double>, ptr %233, align 64, !tbaa !25
  %4615 = fadd <8 x double> %4614, splat (double 1.000000e+00)
  %4616 = icmp eq <8 x i64> %4613, zeroinitializer
  %4617 = select <8 x i1> %4616, <8 x double> %4614, <8 x double> %4615
  store <8 x double> %4617, ptr %233, align 64, !tbaa !25
  %4618 = xor <8 x i64> %4613, %3507
  %4619 = load <8 x double>, ptr %173, align 64, !tbaa !25
  %4620 = fcmp oeq <8 x double> %4619, zeroinitializer
  %4621 = load <8 x double>, ptr %209, align 64, !tbaa !25
  %4622 = fcmp oeq <8 x double> %4621, zeroinitializer
  %4623 = select <8 x i1> %4622, <8 x i1> %4620, <8 x i1> zeroinitializer
  %4624 = select <8 x i1> %4623, <8 x i64> %4618, <8 x i64> zeroinitializer
  %4625 = load <8 x double>, ptr %227, align 64, !tbaa !25
  %4626 = fmul <8 x double> %4625, splat (double 5.000000e-01)
  %4627 = load <8 x double>, ptr %210, align 64, !tbaa !25
  %4628 = fadd <8 x double> %4627, %4626
  %4629 = fadd <8 x double> %4628, splat (double -1.000000e-03)
  %4630 = fcmp ult <8 x double> %4591, %4629
  %4631 = fsub <8 x double> %4627, %4626
  %4632 = fadd <8 x double> %4631, splat (double 1.000000e-03)
  %4633 = fcmp ole <8 x double> %4591, %4632
  %4634 = load <8 x i64>, ptr %212, align 64, !tbaa !25
  %4635 = select <8 x i1> %4633, <8 x i64> splat (i64 -1), <8 x i64> %4634
  %4636 = select <8 x i1> %4630, <8 x i64> %4635, <8 x i64> zeroinitializer
  %4637 = xor <8 x i64> %4636, %4634
  %4638 = and <8 x i64> %4637, %4624
  %4639 = and <8 x i64> %4636, %4624
  %4640 = xor <8 x i64> %4624, splat (i64 -1)
  %4641 = and <8 x i64> %4634, %4640
  %4642 = or <8 x i64> %4639, %4641
  store <8 x i64> %4642, ptr %212, align 64, !tbaa !25
  %4643 = load <8 x i64>, ptr %166, align 64, !tbaa !25
  %4644 = or <8 x i64> %4638, %4643
  store <8 x i64> %4644, ptr %166, align 64, !tbaa !25
  %4645 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4613)
  %4646 = icmp eq i64 %4645, 0
  br i1 %4646, label %4681, label %4647

4647:                                             ; preds = %4581
  %4648 = extractelement <8 x i64> %4613, i64 0
  %4649 = icmp eq i64 %4648, 0
  br i1 %4649, label %4651, label %4650

4650:                                             ; preds = %4647
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %4651

4651:                                             ; preds = %4650, %4647
  %4652 = extractelement <8 x i64> %4613, i64 1
  %4653 = icmp eq i64 %4652, 0
  br i1 %4653, label %4655, label %4654

4654:                                             ; preds = %4651
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %4655

4655:                                             ; preds = %4654, %4651
  %4656 = extractelement <8 x i64> %4613, i64 2
  %4657 = icmp eq i64 %4656, 0
  br i1 %4657, label %4659, label %4658

4658:                                             ; preds = %4655
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %4659

4659:                                             ; preds = %4658, %4655
  %4660 = extractelement <8 x i64> %4613, i64 3
  %4661 = icmp eq i64 %4660, 0
  br i1 %4661, label %4663, label %4662

4662:                                             ; preds = %4659
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %4663

4663:                                             ; preds = %4662, %4659
  %4664 = extractelement <8 x i64> %4613, i64 4
  %4665 = icmp eq i64 %4664, 0
  br i1 %4665, label %4667, label %4666

4666:                                             ; preds = %4663
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %4667

4667:                                             ; preds = %4666, %4663
  %4668 = extractelement <8 x i64> %4613, i64 5
  %4669 = icmp eq i64 %4668, 0
  br i1 %4669, label %4671, label %4670

4670:                                             ; preds = %4667
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %4671

4671:                                             ; preds = %4670, %4667
  %4672 = extractelement <8 x i64> %4613, i64 6
  %4673 = icmp eq i64 %4672, 0
  br i1 %4673, label %4675, label %4674

4674:                                             ; preds = %4671
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %4675

4675:                                             ; preds = %4674, %4671
  %4676 = extractelement <8 x i64> %4613, i64 7
  %4677 = icmp eq i64 %4676, 0
  br i1 %4677, label %4679, label %4678

4678:                                             ; preds = %4675
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %4679

4679:                                             ; preds = %4678, %4675
  %4680 = load <8 x double>, ptr %147, align 64, !tbaa !25
  br label %4681

4681:                                             ; preds = %4679, %4581
  %4682 = phi <8 x double> [ %4680, %4679 ], [ %4612, %4581 ]
  %4683 = load <8 x double>, ptr %144, align 64, !tbaa !25
  %4684 = load <8 x double>, ptr %241, align 64, !tbaa !25
  %4685 = fadd <8 x double> %4684, splat (double -1.000000e+00)
  %4686 = fcmp oge <8 x double> %4683, %4685
  %4687 = select <8 x i1> %4686, <8 x i64> %3507, <8 x i64> zeroinitializer
  %4688 = icmp eq <8 x i64> %4687, zeroinitializer
  %4689 = select <8 x i1> %4688, <8 x double> %4682, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %4689, ptr %147, align 64, !tbaa !25
  %4690 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4687)
  %4691 = icmp eq i64 %4690, 0
  br i1 %4691, label %543, label %4692

4692:                                             ; preds = %4681
  %4693 = extractelement <8 x i64> %4687, i64 0
  %4694 = icmp eq i64 %4693, 0
  br i1 %4694, label %4696, label %4695

4695:                                             ; preds = %4692
  store double 1.000000e+00, ptr %139, align 8, !tbaa !42
  br label %4696

4696:                                             ; preds = %4695, %4692
  %4697 = extractelement <8 x i64> %4687, i64 1
  %4698 = icmp eq i64 %4697, 0
  br i1 %4698, label %4700, label %4699

4699:                                             ; preds = %4696
  store double 1.000000e+00, ptr %271, align 8, !tbaa !42
  br label %4700

4700:                                             ; preds = %4699, %4696
  %4701 = extractelement <8 x i64> %4687, i64 2
  %4702 = icmp eq i64 %4701, 0
  br i1 %4702, label %4704, label %4703

4703:                                             ; preds = %4700
  store double 1.000000e+00, ptr %272, align 8, !tbaa !42
  br label %4704

4704:                                             ; preds = %4703, %4700
  %4705 = extractelement <8 x i64> %4687, i64 3
  %4706 = icmp eq i64 %4705, 0
  br i1 %4706, label %4708, label %4707

4707:                                             ; preds = %4704
  store double 1.000000e+00, ptr %273, align 8, !tbaa !42
  br label %4708

4708:                                             ; preds = %4707, %4704
  %4709 = extractelement <8 x i64> %4687, i64 4
  %4710 = icmp eq i64 %4709, 0
  br i1 %4710, label %4712, label %4711

4711:                                             ; preds = %4708
  store double 1.000000e+00, ptr %274, align 8, !tbaa !42
  br label %4712

4712:                                             ; preds = %4711, %4708
  %4713 = extractelement <8 x i64> %4687, i64 5
  %4714 = icmp eq i64 %4713, 0
  br i1 %4714, label %4716, label %4715

4715:                                             ; preds = %4712
  store double 1.000000e+00, ptr %275, align 8, !tbaa !42
  br label %4716

4716:                                             ; preds = %4715, %4712
  %4717 = extractelement <8 x i64> %4687, i64 6
  %4718 = icmp eq i64 %4717, 0
  br i1 %4718, label %4720, label %4719

4719:                                             ; preds = %4716
  store double 1.000000e+00, ptr %276, align 8, !tbaa !42
  br label %4720

4720:                                             ; preds = %4719, %4716
  %4721 = extractelement <8 x i64> %4687, i64 7
  %4722 = icmp eq i64 %4721, 0
  br i1 %4722, label %543, label %4723

4723:                                             ; preds = %4720
  store double 1.000000e+00, ptr %277, align 8, !tbaa !42
  br label %543

4724:                                             ; preds = %543, %548, %130
  %4725 = phi i64 [ 0, %130 ], [ 1, %548 ], [ 0, %543 ]
  ret i64 %4725
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2336
  %6 = load i64, ptr %5, align 32, !tbaa !26
  %7 = add nsw i64 %6, 1
  store i64 %7, ptr %5, align 32, !tbaa !26
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5904) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %6) #6
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !25
  %8 = sext i32 %2 to i64
  %9 = getelementptr inbounds i64, ptr %4, i64 %8
  store i64 -1, ptr %9, align 8, !tbaa !29
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5888
  %11 = load ptr, ptr %10, align 64, !tbaa !37
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %13 = load <8 x double>, ptr %12, align 64, !tbaa !25
  %14 = getelementptr inbounds nuw i8, ptr %11, i64 64
  store <8 x double> %13, ptr %11, align 64, !tbaa !25
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %16 = load <8 x double>, ptr %15, align 64, !tbaa !25
  %17 = getelementptr inbounds nuw i8, ptr %11, i64 128
  store <8 x double> %16, ptr %14, align 64, !tbaa !25
  %18 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %20 = load <8 x double>, ptr %19, align 64, !tbaa !25
  %21 = getelementptr inbounds nuw i8, ptr %11, i64 192
  store <8 x double> %20, ptr %17, align 64, !tbaa !25
  %22 = load <8 x double>, ptr %18, align 64, !tbaa !25
  %23 = getelementptr inbounds nuw i8, ptr %11, i64 256
  store <8 x double> %22, ptr %21, align 64, !tbaa !25
  %24 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %25 = load i64, ptr %24, align 64, !tbaa !16
  %26 = icmp sgt i64 %25, 0
  br i1 %26, label %27, label %29

27:                                               ; preds = %3
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 5896
  br label %34

29:                                               ; preds = %34, %3
  %30 = phi ptr [ %23, %3 ], [ %40, %34 ]
  %31 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %32 = load i64, ptr %31, align 8, !tbaa !133
  %33 = icmp eq i64 %32, 0
  br i1 %33, label %175, label %44

34:                                               ; preds = %27, %34
  %35 = phi ptr [ %23, %27 ], [ %40, %34 ]
  %36 = phi i64 [ 0, %27 ], [ %41, %34 ]
  %37 = load ptr, ptr %28, align 8, !tbaa !27
  %38 = getelementptr inbounds nuw %struct.Piece, ptr %37, i64 %36, i32 35
  %39 = load <8 x double>, ptr %38, align 64, !tbaa !25
  %40 = getelementptr inbounds nuw i8, ptr %35, i64 64
  store <8 x double> %39, ptr %35, align 64, !tbaa !25
  %41 = add nuw nsw i64 %36, 1
  %42 = load i64, ptr %24, align 64, !tbaa !16
  %43 = icmp slt i64 %41, %42
  br i1 %43, label %34, label %29, !llvm.loop !134

44:                                               ; preds = %29
  %45 = getelementptr inbounds nuw i8, ptr %0, i64 3072
  %46 = load <8 x double>, ptr %45, align 64, !tbaa !25
  %47 = getelementptr inbounds nuw i8, ptr %30, i64 64
  store <8 x double> %46, ptr %30, align 64, !tbaa !25
  %48 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %49 = load <8 x double>, ptr %48, align 64, !tbaa !25
  %50 = getelementptr inbounds nuw i8, ptr %30, i64 128
  store <8 x double> %49, ptr %47, align 64, !tbaa !25
  %51 = load <8 x double>, ptr %19, align 64, !tbaa !25
  %52 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %53 = load <8 x double>, ptr %52, align 64, !tbaa !25
  %54 = fsub <8 x double> %51, %53
  %55 = fcmp ogt <8 x double> %54, zeroinitializer
  %56 = select <8 x i1> %55, <8 x double> %54, <8 x double> zeroinitializer
  store <8 x double> %56, ptr %50, align 64, !tbaa !25
  %57 = load i64, ptr %24, align 64, !tbaa !16
  %58 = icmp sgt i64 %57, 0
  br i1 %58, label %59, label %175

59:                                               ; preds = %44
  %60 = getelementptr inbounds nuw i8, ptr %30, i64 192
  %61 = getelementptr inbounds nuw i8, ptr %0, i64 5896
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  br label %64

64:                                               ; preds = %59, %64
  %65 = phi ptr [ %60, %59 ], [ %171, %64 ]
  %66 = phi i64 [ 0, %59 ], [ %172, %64 ]
  %67 = load ptr, ptr %61, align 8, !tbaa !27
  %68 = getelementptr inbounds nuw %struct.Piece, ptr %67, i64 %66
  %69 = getelementptr inbounds nuw i8, ptr %68, i64 7568
  %70 = load ptr, ptr %69, align 16, !tbaa !46
  %71 = load i64, ptr %62, align 8, !tbaa !20
  %72 = getelementptr <8 x double>, ptr %70, i64 %71
  %73 = getelementptr i8, ptr %72, i64 -64
  %74 = load <8 x double>, ptr %73, align 64, !tbaa !25
  %75 = getelementptr inbounds nuw i8, ptr %68, i64 6848
  %76 = load <8 x double>, ptr %75, align 64, !tbaa !25
  %77 = getelementptr inbounds nuw i8, ptr %68, i64 5568
  %78 = load <8 x double>, ptr %77, align 64, !tbaa !25
  %79 = fsub <8 x double> %78, %74
  %80 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %76, <8 x double> %79, <8 x double> %74)
  %81 = getelementptr inbounds nuw i8, ptr %65, i64 64
  store <8 x double> %80, ptr %65, align 64, !tbaa !25
  %82 = getelementptr inbounds nuw i8, ptr %68, i64 6400
  %83 = load <8 x double>, ptr %82, align 64, !tbaa !25
  %84 = getelementptr inbounds nuw i8, ptr %65, i64 128
  store <8 x double> %83, ptr %81, align 64, !tbaa !25
  %85 = load <8 x double>, ptr %68, align 64, !tbaa !25
  %86 = getelementptr inbounds nuw i8, ptr %68, i64 3712
  %87 = load <8 x double>, ptr %86, align 64, !tbaa !25
  %88 = fsub <8 x double> %85, %87
  %89 = getelementptr inbounds nuw i8, ptr %65, i64 192
  store <8 x double> %88, ptr %84, align 64, !tbaa !25
  %90 = getelementptr inbounds nuw i8, ptr %68, i64 4032
  %91 = load <8 x double>, ptr %90, align 64, !tbaa !25
  %92 = getelementptr inbounds nuw i8, ptr %65, i64 256
  store <8 x double> %91, ptr %89, align 64, !tbaa !25
  %93 = getelementptr inbounds nuw i8, ptr %68, i64 3968
  %94 = load <8 x double>, ptr %93, align 64, !tbaa !25
  %95 = getelementptr inbounds nuw i8, ptr %65, i64 320
  store <8 x double> %94, ptr %92, align 64, !tbaa !25
  %96 = getelementptr inbounds nuw i8, ptr %68, i64 3840
  %97 = load <8 x double>, ptr %96, align 64, !tbaa !25
  %98 = getelementptr inbounds nuw i8, ptr %65, i64 384
  store <8 x double> %97, ptr %95, align 64, !tbaa !25
  %99 = getelementptr inbounds nuw i8, ptr %68, i64 4096
  %100 = load <8 x double>, ptr %99, align 64, !tbaa !25
  %101 = getelementptr inbounds nuw i8, ptr %65, i64 448
  store <8 x double> %100, ptr %98, align 64, !tbaa !25
  %102 = getelementptr inbounds nuw i8, ptr %68, i64 7688
  %103 = load i64, ptr %63, align 16, !tbaa !21
  %104 = sitofp i64 %103 to double
  %105 = tail call double @llvm.fmuladd.f64(double %104, double 7.500000e-01, double -5.000000e-01)
  %106 = fcmp ogt double %105, 0.000000e+00
  %107 = select i1 %106, double %105, double 0.000000e+00
  %108 = fptosi double %107 to i64
  %109 = add nsw i64 %103, -2
  %110 = tail call i64 @llvm.smin.i64(i64 %109, i64 %108)
  %111 = sitofp i64 %110 to double
  %112 = fsub double %105, %111
  %113 = fsub double 1.000000e+00, %112
  %114 = insertelement <8 x double> poison, double %113, i64 0
  %115 = shufflevector <8 x double> %114, <8 x double> poison, <8 x i32> zeroinitializer
  %116 = load ptr, ptr %102, align 8, !tbaa !50
  %117 = getelementptr inbounds <8 x double>, ptr %116, i64 %110
  %118 = load <8 x double>, ptr %117, align 64, !tbaa !25
  %119 = insertelement <8 x double> poison, double %112, i64 0
  %120 = shufflevector <8 x double> %119, <8 x double> poison, <8 x i32> zeroinitializer
  %121 = getelementptr i8, ptr %117, i64 64
  %122 = load <8 x double>, ptr %121, align 64, !tbaa !25
  %123 = fmul <8 x double> %122, %120
  %124 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %115, <8 x double> %118, <8 x double> %123)
  store <8 x double> %124, ptr %101, align 64, !tbaa !25
  %125 = load i64, ptr %63, align 16, !tbaa !21
  %126 = sitofp i64 %125 to double
  %127 = tail call double @llvm.fmuladd.f64(double %126, double 5.000000e-01, double -5.000000e-01)
  %128 = fcmp ogt double %127, 0.000000e+00
  %129 = select i1 %128, double %127, double 0.000000e+00
  %130 = fptosi double %129 to i64
  %131 = add nsw i64 %125, -2
  %132 = tail call i64 @llvm.smin.i64(i64 %131, i64 %130)
  %133 = sitofp i64 %132 to double
  %134 = fsub double %127, %133
  %135 = fsub double 1.000000e+00, %134
  %136 = insertelement <8 x double> poison, double %135, i64 0
  %137 = shufflevector <8 x double> %136, <8 x double> poison, <8 x i32> zeroinitializer
  %138 = load ptr, ptr %102, align 8, !tbaa !50
  %139 = getelementptr inbounds <8 x double>, ptr %138, i64 %132
  %140 = load <8 x double>, ptr %139, align 64, !tbaa !25
  %141 = insertelement <8 x double> poison, double %134, i64 0
  %142 = shufflevector <8 x double> %141, <8 x double> poison, <8 x i32> zeroinitializer
  %143 = getelementptr i8, ptr %139, i64 64
  %144 = load <8 x double>, ptr %143, align 64, !tbaa !25
  %145 = fmul <8 x double> %144, %142
  %146 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %137, <8 x double> %140, <8 x double> %145)
  %147 = getelementptr inbounds nuw i8, ptr %65, i64 512
  store <8 x double> %146, ptr %147, align 64, !tbaa !25
  %148 = load i64, ptr %63, align 16, !tbaa !21
  %149 = sitofp i64 %148 to double
  %150 = tail call double @llvm.fmuladd.f64(double %149, double 2.500000e-01, double -5.000000e-01)
  %151 = fcmp ogt double %150, 0.000000e+00
  %152 = select i1 %151, double %150, double 0.000000e+00
  %153 = fptosi double %152 to i64
  %154 = add nsw i64 %148, -2
  %155 = tail call i64 @llvm.smin.i64(i64 %154, i64 %153)
  %156 = sitofp i64 %155 to double
  %157 = fsub double %150, %156
  %158 = fsub double 1.000000e+00, %157
  %159 = insertelement <8 x double> poison, double %158, i64 0
  %160 = shufflevector <8 x double> %159, <8 x double> poison, <8 x i32> zeroinitializer
  %161 = load ptr, ptr %102, align 8, !tbaa !50
  %162 = getelementptr inbounds <8 x double>, ptr %161, i64 %155
  %163 = load <8 x double>, ptr %162, align 64, !tbaa !25
  %164 = insertelement <8 x double> poison, double %157, i64 0
  %165 = shufflevector <8 x double> %164, <8 x double> poison, <8 x i32> zeroinitializer
  %166 = getelementptr i8, ptr %162, i64 64
  %167 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %168 = fmul <8 x double> %167, %165
  %169 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %160, <8 x double> %163, <8 x double> %168)
  %170 = getelementptr inbounds nuw i8, ptr %65, i64 576
  store <8 x double> %169, ptr %170, align 64, !tbaa !25
  %171 = getelementptr inbounds nuw i8, ptr %65, i64 640
  %172 = add nuw nsw i64 %66, 1
  %173 = load i64, ptr %24, align 64, !tbaa !16
  %174 = icmp slt i64 %172, %173
  br i1 %174, label %64, label %175, !llvm.loop !135

175:                                              ; preds = %64, %44, %29
  %176 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %180 = load ptr, ptr %179, align 8
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %184 = getelementptr inbounds nuw i8, ptr %0, i64 5760
  %185 = load ptr, ptr %10, align 64
  br label %186

186:                                              ; preds = %175, %260
  %187 = phi i64 [ 0, %175 ], [ %261, %260 ]
  %188 = getelementptr inbounds nuw i64, ptr %4, i64 %187
  %189 = load i64, ptr %188, align 8, !tbaa !29
  %190 = icmp eq i64 %189, 0
  br i1 %190, label %260, label %191

191:                                              ; preds = %186
  %192 = getelementptr inbounds nuw [8 x i64], ptr %176, i64 0, i64 %187
  %193 = load i64, ptr %192, align 8, !tbaa !29
  %194 = load i64, ptr %177, align 8, !tbaa !136
  %195 = icmp eq i64 %193, %194
  br i1 %195, label %199, label %196

196:                                              ; preds = %191
  %197 = getelementptr inbounds nuw [8 x ptr], ptr %184, i64 0, i64 %187
  %198 = load ptr, ptr %197, align 8, !tbaa !137
  br label %213

199:                                              ; preds = %191
  %200 = getelementptr inbounds nuw [8 x i64], ptr %178, i64 0, i64 %187
  %201 = load i64, ptr %200, align 8, !tbaa !29
  %202 = load i64, ptr %181, align 8, !tbaa !41
  %203 = getelementptr inbounds i64, ptr %180, i64 %202
  store i64 %201, ptr %203, align 8, !tbaa !29
  %204 = load ptr, ptr %182, align 8, !tbaa !139
  %205 = load i64, ptr %181, align 8, !tbaa !41
  %206 = add nsw i64 %205, 1
  store i64 %206, ptr %181, align 8, !tbaa !41
  %207 = load i64, ptr %177, align 8, !tbaa !136
  %208 = mul nsw i64 %207, %205
  %209 = load i64, ptr %183, align 8, !tbaa !15
  %210 = mul nsw i64 %208, %209
  %211 = getelementptr inbounds double, ptr %204, i64 %210
  %212 = getelementptr inbounds nuw [8 x ptr], ptr %184, i64 0, i64 %187
  store ptr %211, ptr %212, align 8, !tbaa !137
  br label %213

213:                                              ; preds = %196, %199
  %214 = phi i64 [ %193, %196 ], [ 0, %199 ]
  %215 = phi ptr [ %198, %196 ], [ %211, %199 ]
  %216 = add nsw i64 %214, 1
  store i64 %216, ptr %192, align 8, !tbaa !29
  %217 = load i64, ptr %183, align 8, !tbaa !15
  %218 = mul nsw i64 %217, %214
  %219 = getelementptr inbounds double, ptr %215, i64 %218
  %220 = icmp sgt i64 %217, 0
  br i1 %220, label %221, label %260

221:                                              ; preds = %213
  %222 = getelementptr inbounds nuw double, ptr %185, i64 %187
  %223 = and i64 %217, 3
  %224 = icmp ult i64 %217, 4
  br i1 %224, label %248, label %225

225:                                              ; preds = %221
  %226 = and i64 %217, 9223372036854775804
  br label %227

227:                                              ; preds = %227, %225
  %228 = phi i64 [ 0, %225 ], [ %245, %227 ]
  %229 = phi i64 [ 0, %225 ], [ %246, %227 ]
  %230 = getelementptr inbounds nuw <8 x double>, ptr %222, i64 %228
  %231 = load double, ptr %230, align 8, !tbaa !42
  %232 = getelementptr inbounds nuw double, ptr %219, i64 %228
  store double %231, ptr %232, align 8, !tbaa !42
  %233 = or disjoint i64 %228, 1
  %234 = getelementptr inbounds nuw <8 x double>, ptr %222, i64 %233
  %235 = load double, ptr %234, align 8, !tbaa !42
  %236 = getelementptr inbounds nuw double, ptr %219, i64 %233
  store double %235, ptr %236, align 8, !tbaa !42
  %237 = or disjoint i64 %228, 2
  %238 = getelementptr inbounds nuw <8 x double>, ptr %222, i64 %237
  %239 = load double, ptr %238, align 8, !tbaa !42
  %240 = getelementptr inbounds nuw double, ptr %219, i64 %237
  store double %239, ptr %240, align 8, !tbaa !42
  %241 = or disjoint i64 %228, 3
  %242 = getelementptr inbounds nuw <8 x double>, ptr %222, i64 %241
  %243 = load double, ptr %242, align 8, !tbaa !42
  %244 = getelementptr inbounds nuw double, ptr %219, i64 %241
  store double %243, ptr %244, align 8, !tbaa !42
  %245 = add nuw nsw i64 %228, 4
  %246 = add i64 %229, 4
  %247 = icmp eq i64 %246, %226
  br i1 %247, label %248, label %227, !llvm.loop !140

248:                                              ; preds = %227, %221
  %249 = phi i64 [ 0, %221 ], [ %245, %227 ]
  %250 = icmp eq i64 %223, 0
  br i1 %250, label %260, label %251

251:                                              ; preds = %248, %251
  %252 = phi i64 [ %257, %251 ], [ %249, %248 ]
  %253 = phi i64 [ %258, %251 ], [ 0, %248 ]
  %254 = getelementptr inbounds nuw <8 x double>, ptr %222, i64 %252
  %255 = load double, ptr %254, align 8, !tbaa !42
  %256 = getelementptr inbounds nuw double, ptr %219, i64 %252
  store double %255, ptr %256, align 8, !tbaa !42
  %257 = add nuw nsw i64 %252, 1
  %258 = add i64 %253, 1
  %259 = icmp eq i64 %258, %223
  br i1 %259, label %260, label %251, !llvm.loop !144

260:                                              ; preds = %248, %251, %213, %186
  %261 = add nuw nsw i64 %187, 1
  %262 = icmp eq i64 %261, 8
  br i1 %262, label %263, label %186, !llvm.loop !143

263:                                              ; preds = %260
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5904) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !29
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !136
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %11 = getelementptr inbounds [8 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !29
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %13 = shl nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = sext i32 %14 to i64
  %16 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !29
  %17 = sext i32 %13 to i64
  %18 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !29
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %20 = getelementptr inbounds [8 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !42
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !145
  %23 = mul i64 %3, 288
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr double, ptr %0, i64 %6
  br label %41

26:                                               ; preds = %41
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %28 = load i64, ptr %27, align 64, !tbaa !16
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %60

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 5896
  %32 = load ptr, ptr %31, align 8, !tbaa !27
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %36 = load ptr, ptr %35, align 8, !tbaa !146
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %38 = load ptr, ptr %37, align 8, !tbaa !147
  %39 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %40 = load ptr, ptr %39, align 8, !tbaa !148
  br label %151

41:                                               ; preds = %41, %4
  %42 = phi i64 [ 0, %4 ], [ %58, %41 ]
  %43 = getelementptr double, ptr %24, i64 %42
  %44 = load double, ptr %43, align 8, !tbaa !42
  %45 = getelementptr <8 x double>, ptr %25, i64 %42
  store double %44, ptr %45, align 8, !tbaa !42
  %46 = or disjoint i64 %42, 1
  %47 = getelementptr double, ptr %24, i64 %46
  %48 = load double, ptr %47, align 8, !tbaa !42
  %49 = getelementptr <8 x double>, ptr %25, i64 %46
  store double %48, ptr %49, align 8, !tbaa !42
  %50 = or disjoint i64 %42, 2
  %51 = getelementptr double, ptr %24, i64 %50
  %52 = load double, ptr %51, align 8, !tbaa !42
  %53 = getelementptr <8 x double>, ptr %25, i64 %50
  store double %52, ptr %53, align 8, !tbaa !42
  %54 = or disjoint i64 %42, 3
  %55 = getelementptr double, ptr %24, i64 %54
  %56 = load double, ptr %55, align 8, !tbaa !42
  %57 = getelementptr <8 x double>, ptr %25, i64 %54
  store double %56, ptr %57, align 8, !tbaa !42
  %58 = add nuw nsw i64 %42, 4
  %59 = icmp eq i64 %58, 36
  br i1 %59, label %26, label %41, !llvm.loop !149

60:                                               ; preds = %530, %26
  %61 = getelementptr inbounds nuw i8, ptr %0, i64 2432
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 3200
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %65 = getelementptr inbounds double, ptr %64, i64 %6
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %67 = getelementptr inbounds double, ptr %66, i64 %6
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %69 = getelementptr inbounds double, ptr %68, i64 %6
  %70 = getelementptr double, ptr %61, i64 %6
  %71 = getelementptr i8, ptr %70, i64 256
  store double 0.000000e+00, ptr %71, align 8, !tbaa !42
  %72 = getelementptr i8, ptr %70, i64 320
  store double 0.000000e+00, ptr %72, align 8, !tbaa !42
  %73 = load double, ptr %65, align 8, !tbaa !42
  store double %73, ptr %70, align 8, !tbaa !42
  %74 = load double, ptr %67, align 8, !tbaa !42
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 2624
  %76 = getelementptr inbounds double, ptr %75, i64 %6
  store double %74, ptr %76, align 8, !tbaa !42
  %77 = load double, ptr %69, align 8, !tbaa !42
  %78 = getelementptr inbounds nuw i8, ptr %0, i64 2560
  %79 = getelementptr inbounds double, ptr %78, i64 %6
  store double %77, ptr %79, align 8, !tbaa !42
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 2496
  %81 = getelementptr inbounds double, ptr %80, i64 %6
  store double %77, ptr %81, align 8, !tbaa !42
  %82 = getelementptr double, ptr %62, i64 %6
  %83 = getelementptr i8, ptr %82, i64 256
  store double 0.000000e+00, ptr %83, align 8, !tbaa !42
  %84 = getelementptr i8, ptr %82, i64 320
  store double 0.000000e+00, ptr %84, align 8, !tbaa !42
  store double %73, ptr %82, align 8, !tbaa !42
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 3008
  %86 = getelementptr inbounds double, ptr %85, i64 %6
  store double %74, ptr %86, align 8, !tbaa !42
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %88 = getelementptr inbounds double, ptr %87, i64 %6
  store double %77, ptr %88, align 8, !tbaa !42
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %90 = getelementptr inbounds double, ptr %89, i64 %6
  store double %77, ptr %90, align 8, !tbaa !42
  %91 = getelementptr double, ptr %63, i64 %6
  %92 = getelementptr i8, ptr %91, i64 256
  store double 0.000000e+00, ptr %92, align 8, !tbaa !42
  %93 = getelementptr i8, ptr %91, i64 320
  store double 0.000000e+00, ptr %93, align 8, !tbaa !42
  store double %73, ptr %91, align 8, !tbaa !42
  %94 = getelementptr inbounds nuw i8, ptr %0, i64 3392
  %95 = getelementptr inbounds double, ptr %94, i64 %6
  store double %74, ptr %95, align 8, !tbaa !42
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 3328
  %97 = getelementptr inbounds double, ptr %96, i64 %6
  store double %77, ptr %97, align 8, !tbaa !42
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 3264
  %99 = getelementptr inbounds double, ptr %98, i64 %6
  store double %77, ptr %99, align 8, !tbaa !42
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %101 = getelementptr inbounds double, ptr %100, i64 %6
  %102 = load double, ptr %101, align 8, !tbaa !42
  %103 = getelementptr inbounds nuw i8, ptr %0, i64 3904
  %104 = getelementptr inbounds double, ptr %103, i64 %6
  store double %102, ptr %104, align 8, !tbaa !42
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %106 = getelementptr inbounds double, ptr %105, i64 %6
  store double %102, ptr %106, align 8, !tbaa !42
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 4544
  %108 = getelementptr inbounds double, ptr %107, i64 %6
  store double 1.000000e+09, ptr %108, align 8, !tbaa !42
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %110 = getelementptr inbounds double, ptr %109, i64 %6
  store double 0.000000e+00, ptr %110, align 8, !tbaa !42
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %112 = getelementptr inbounds double, ptr %111, i64 %6
  %113 = load double, ptr %112, align 8, !tbaa !42
  %114 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %115 = getelementptr inbounds double, ptr %114, i64 %6
  store double %113, ptr %115, align 8, !tbaa !42
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 4608
  %117 = getelementptr inbounds double, ptr %116, i64 %6
  store double %113, ptr %117, align 8, !tbaa !42
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 2240
  %119 = getelementptr inbounds double, ptr %118, i64 %6
  %120 = load double, ptr %119, align 8, !tbaa !42
  %121 = getelementptr inbounds nuw i8, ptr %0, i64 5056
  %122 = getelementptr inbounds double, ptr %121, i64 %6
  store double %120, ptr %122, align 8, !tbaa !42
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 4416
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 4480
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 4800
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 4864
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 4928
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 5120
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 5184
  %133 = getelementptr inbounds double, ptr %123, i64 %6
  store double 0.000000e+00, ptr %133, align 8, !tbaa !42
  %134 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %134, align 8, !tbaa !42
  %135 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %135, align 8, !tbaa !42
  %136 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !42
  %137 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !42
  %138 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !42
  %139 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !42
  %140 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !42
  %141 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !42
  %142 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !42
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %144 = getelementptr inbounds i64, ptr %143, i64 %6
  store i64 0, ptr %144, align 8, !tbaa !29
  %145 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %146 = getelementptr inbounds i64, ptr %145, i64 %6
  store i64 -1, ptr %146, align 8, !tbaa !29
  %147 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %148 = getelementptr inbounds i64, ptr %147, i64 %6
  store i64 -1, ptr %148, align 8, !tbaa !29
  %149 = getelementptr inbounds nuw i8, ptr %0, i64 5248
  %150 = getelementptr inbounds i64, ptr %149, i64 %6
  store i64 -1, ptr %150, align 8, !tbaa !29
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5904) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  ret void

151:                                              ; preds = %30, %530
  %152 = phi i64 [ %28, %30 ], [ %532, %530 ]
  %153 = phi i64 [ 0, %30 ], [ %531, %530 ]
  %154 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %153
  %155 = load i64, ptr %33, align 8, !tbaa !20
  %156 = load i64, ptr %34, align 16, !tbaa !21
  %157 = mul nsw i64 %152, %3
  %158 = add nsw i64 %157, %153
  %159 = getelementptr inbounds nuw i8, ptr %154, i64 7552
  %160 = load i64, ptr %159, align 64, !tbaa !30
  %161 = mul i64 %158, 368
  %162 = getelementptr i8, ptr %36, i64 %161
  %163 = getelementptr double, ptr %154, i64 %6
  br label %193

164:                                              ; preds = %193
  %165 = icmp eq i64 %160, 0
  %166 = getelementptr inbounds i64, ptr %40, i64 %158
  %167 = load i64, ptr %166, align 8, !tbaa !29
  %168 = mul nsw i64 %155, 3
  %169 = add nsw i64 %155, 1
  %170 = select i1 %165, i64 0, i64 2
  %171 = shl i64 %169, %170
  %172 = add nsw i64 %171, %168
  %173 = mul nsw i64 %167, %172
  %174 = getelementptr inbounds double, ptr %38, i64 %173
  %175 = icmp sgt i64 %155, 0
  br i1 %175, label %176, label %217

176:                                              ; preds = %164
  %177 = getelementptr inbounds nuw i8, ptr %154, i64 7648
  %178 = load ptr, ptr %177, align 32, !tbaa !71
  %179 = getelementptr double, ptr %178, i64 %6
  %180 = getelementptr double, ptr %174, i64 %155
  %181 = getelementptr inbounds nuw i8, ptr %154, i64 7656
  %182 = load ptr, ptr %181, align 8, !tbaa !48
  %183 = getelementptr double, ptr %182, i64 %6
  %184 = shl i64 %155, 4
  %185 = getelementptr i8, ptr %174, i64 %184
  %186 = getelementptr inbounds nuw i8, ptr %154, i64 7664
  %187 = load ptr, ptr %186, align 16, !tbaa !120
  %188 = getelementptr double, ptr %187, i64 %6
  %189 = and i64 %155, 1
  %190 = icmp eq i64 %155, 1
  br i1 %190, label %204, label %191

191:                                              ; preds = %176
  %192 = and i64 %155, 9223372036854775806
  br label %232

193:                                              ; preds = %193, %151
  %194 = phi i64 [ 0, %151 ], [ %202, %193 ]
  %195 = getelementptr double, ptr %162, i64 %194
  %196 = load double, ptr %195, align 8, !tbaa !42
  %197 = getelementptr <8 x double>, ptr %163, i64 %194
  store double %196, ptr %197, align 8, !tbaa !42
  %198 = or disjoint i64 %194, 1
  %199 = getelementptr double, ptr %162, i64 %198
  %200 = load double, ptr %199, align 8, !tbaa !42
  %201 = getelementptr <8 x double>, ptr %163, i64 %198
  store double %200, ptr %201, align 8, !tbaa !42
  %202 = add nuw nsw i64 %194, 2
  %203 = icmp eq i64 %202, 46
  br i1 %203, label %164, label %193, !llvm.loop !150

204:                                              ; preds = %232, %176
  %205 = phi i64 [ 0, %176 ], [ %254, %232 ]
  %206 = icmp eq i64 %189, 0
  br i1 %206, label %217, label %207

207:                                              ; preds = %204
  %208 = getelementptr inbounds nuw double, ptr %174, i64 %205
  %209 = load double, ptr %208, align 8, !tbaa !42
  %210 = getelementptr <8 x double>, ptr %179, i64 %205
  store double %209, ptr %210, align 8, !tbaa !42
  %211 = getelementptr double, ptr %180, i64 %205
  %212 = load double, ptr %211, align 8, !tbaa !42
  %213 = getelementptr <8 x double>, ptr %183, i64 %205
  store double %212, ptr %213, align 8, !tbaa !42
  %214 = getelementptr double, ptr %185, i64 %205
  %215 = load double, ptr %214, align 8, !tbaa !42
  %216 = getelementptr <8 x double>, ptr %188, i64 %205
  store double %215, ptr %216, align 8, !tbaa !42
  br label %217

217:                                              ; preds = %207, %204, %164
  %218 = getelementptr inbounds nuw i8, ptr %154, i64 960
  %219 = getelementptr inbounds double, ptr %218, i64 %6
  %220 = load double, ptr %219, align 8, !tbaa !42
  %221 = load double, ptr %163, align 8, !tbaa !42
  %222 = icmp sgt i64 %171, 0
  br i1 %222, label %223, label %269

223:                                              ; preds = %217
  %224 = getelementptr double, ptr %174, i64 %168
  %225 = getelementptr inbounds nuw i8, ptr %154, i64 7672
  %226 = load ptr, ptr %225, align 8, !tbaa !34
  %227 = getelementptr double, ptr %226, i64 %6
  %228 = and i64 %171, 3
  %229 = icmp ult i64 %171, 4
  br i1 %229, label %257, label %230

230:                                              ; preds = %223
  %231 = and i64 %171, 9223372036854775804
  br label %278

232:                                              ; preds = %232, %191
  %233 = phi i64 [ 0, %191 ], [ %254, %232 ]
  %234 = phi i64 [ 0, %191 ], [ %255, %232 ]
  %235 = getelementptr inbounds nuw double, ptr %174, i64 %233
  %236 = load double, ptr %235, align 8, !tbaa !42
  %237 = getelementptr <8 x double>, ptr %179, i64 %233
  store double %236, ptr %237, align 8, !tbaa !42
  %238 = getelementptr double, ptr %180, i64 %233
  %239 = load double, ptr %238, align 8, !tbaa !42
  %240 = getelementptr <8 x double>, ptr %183, i64 %233
  store double %239, ptr %240, align 8, !tbaa !42
  %241 = getelementptr double, ptr %185, i64 %233
  %242 = load double, ptr %241, align 8, !tbaa !42
  %243 = getelementptr <8 x double>, ptr %188, i64 %233
  store double %242, ptr %243, align 8, !tbaa !42
  %244 = or disjoint i64 %233, 1
  %245 = getelementptr inbounds nuw double, ptr %174, i64 %244
  %246 = load double, ptr %245, align 8, !tbaa !42
  %247 = getelementptr <8 x double>, ptr %179, i64 %244
  store double %246, ptr %247, align 8, !tbaa !42
  %248 = getelementptr double, ptr %180, i64 %244
  %249 = load double, ptr %248, align 8, !tbaa !42
  %250 = getelementptr <8 x double>, ptr %183, i64 %244
  store double %249, ptr %250, align 8, !tbaa !42
  %251 = getelementptr double, ptr %185, i64 %244
  %252 = load double, ptr %251, align 8, !tbaa !42
  %253 = getelementptr <8 x double>, ptr %188, i64 %244
  store double %252, ptr %253, align 8, !tbaa !42
  %254 = add nuw nsw i64 %233, 2
  %255 = add i64 %234, 2
  %256 = icmp eq i64 %255, %192
  br i1 %256, label %204, label %232, !llvm.loop !151

257:                                              ; preds = %278, %223
  %258 = phi i64 [ 0, %223 ], [ %296, %278 ]
  %259 = icmp eq i64 %228, 0
  br i1 %259, label %269, label %260

260:                                              ; preds = %257, %260
  %261 = phi i64 [ %266, %260 ], [ %258, %257 ]
  %262 = phi i64 [ %267, %260 ], [ 0, %257 ]
  %263 = getelementptr double, ptr %224, i64 %261
  %264 = load double, ptr %263, align 8, !tbaa !42
  %265 = getelementptr <8 x double>, ptr %227, i64 %261
  store double %264, ptr %265, align 8, !tbaa !42
  %266 = add nuw nsw i64 %261, 1
  %267 = add i64 %262, 1
  %268 = icmp eq i64 %267, %228
  br i1 %268, label %269, label %260, !llvm.loop !152

269:                                              ; preds = %257, %260, %217
  %270 = icmp ne i64 %160, 0
  %271 = icmp sgt i64 %155, -1
  %272 = select i1 %270, i1 %271, i1 false
  br i1 %272, label %273, label %299

273:                                              ; preds = %269
  %274 = fdiv double 1.000000e+00, %221
  %275 = getelementptr inbounds nuw i8, ptr %154, i64 7672
  %276 = load ptr, ptr %275, align 8, !tbaa !34
  %277 = getelementptr double, ptr %276, i64 %6
  br label %418

278:                                              ; preds = %278, %230
  %279 = phi i64 [ 0, %230 ], [ %296, %278 ]
  %280 = phi i64 [ 0, %230 ], [ %297, %278 ]
  %281 = getelementptr double, ptr %224, i64 %279
  %282 = load double, ptr %281, align 8, !tbaa !42
  %283 = getelementptr <8 x double>, ptr %227, i64 %279
  store double %282, ptr %283, align 8, !tbaa !42
  %284 = or disjoint i64 %279, 1
  %285 = getelementptr double, ptr %224, i64 %284
  %286 = load double, ptr %285, align 8, !tbaa !42
  %287 = getelementptr <8 x double>, ptr %227, i64 %284
  store double %286, ptr %287, align 8, !tbaa !42
  %288 = or disjoint i64 %279, 2
  %289 = getelementptr double, ptr %224, i64 %288
  %290 = load double, ptr %289, align 8, !tbaa !42
  %291 = getelementptr <8 x double>, ptr %227, i64 %288
  store double %290, ptr %291, align 8, !tbaa !42
  %292 = or disjoint i64 %279, 3
  %293 = getelementptr double, ptr %224, i64 %292
  %294 = load double, ptr %293, align 8, !tbaa !42
  %295 = getelementptr <8 x double>, ptr %227, i64 %292
  store double %294, ptr %295, align 8, !tbaa !42
  %296 = add nuw nsw i64 %279, 4
  %297 = add i64 %280, 4
  %298 = icmp eq i64 %297, %231
  br i1 %298, label %257, label %278, !llvm.loop !153

299:                                              ; preds = %418, %269
  %300 = getelementptr inbounds nuw i8, ptr %154, i64 2560
  %301 = getelementptr inbounds double, ptr %300, i64 %6
  %302 = load double, ptr %301, align 8, !tbaa !42
  %303 = getelementptr inbounds nuw i8, ptr %154, i64 2624
  %304 = getelementptr inbounds double, ptr %303, i64 %6
  %305 = load double, ptr %304, align 8, !tbaa !42
  %306 = getelementptr inbounds nuw i8, ptr %154, i64 2688
  %307 = getelementptr inbounds double, ptr %306, i64 %6
  %308 = load double, ptr %307, align 8, !tbaa !42
  %309 = getelementptr inbounds nuw i8, ptr %154, i64 2752
  %310 = getelementptr inbounds double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !42
  %312 = tail call double @llvm.fmuladd.f64(double %221, double %311, double %308)
  %313 = tail call double @llvm.fmuladd.f64(double %221, double %312, double %305)
  %314 = tail call double @llvm.fmuladd.f64(double %221, double %313, double %302)
  %315 = getelementptr inbounds nuw i8, ptr %154, i64 832
  %316 = getelementptr inbounds double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !42
  %318 = getelementptr inbounds nuw i8, ptr %154, i64 1408
  %319 = getelementptr inbounds double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !42
  %321 = getelementptr inbounds nuw i8, ptr %154, i64 1536
  %322 = getelementptr inbounds double, ptr %321, i64 %6
  %323 = load double, ptr %322, align 8, !tbaa !42
  %324 = fsub double %320, %323
  %325 = fmul double %317, %324
  %326 = getelementptr inbounds nuw i8, ptr %154, i64 2944
  %327 = getelementptr inbounds nuw i8, ptr %154, i64 3712
  %328 = getelementptr inbounds nuw i8, ptr %154, i64 4480
  %329 = getelementptr inbounds nuw i8, ptr %154, i64 896
  %330 = getelementptr inbounds double, ptr %329, i64 %6
  %331 = getelementptr inbounds nuw i8, ptr %154, i64 1024
  %332 = getelementptr inbounds double, ptr %331, i64 %6
  %333 = getelementptr double, ptr %326, i64 %6
  %334 = getelementptr i8, ptr %333, i64 320
  store double 0.000000e+00, ptr %334, align 8, !tbaa !42
  %335 = getelementptr i8, ptr %333, i64 384
  store double 0.000000e+00, ptr %335, align 8, !tbaa !42
  %336 = getelementptr i8, ptr %333, i64 448
  store double 0.000000e+00, ptr %336, align 8, !tbaa !42
  %337 = getelementptr i8, ptr %333, i64 512
  store double 0.000000e+00, ptr %337, align 8, !tbaa !42
  %338 = getelementptr i8, ptr %333, i64 640
  store double 0.000000e+00, ptr %338, align 8, !tbaa !42
  store double %221, ptr %333, align 8, !tbaa !42
  %339 = getelementptr inbounds nuw i8, ptr %154, i64 3008
  %340 = getelementptr inbounds double, ptr %339, i64 %6
  store double %320, ptr %340, align 8, !tbaa !42
  %341 = load double, ptr %330, align 8, !tbaa !42
  %342 = getelementptr inbounds nuw i8, ptr %154, i64 3072
  %343 = getelementptr inbounds double, ptr %342, i64 %6
  store double %341, ptr %343, align 8, !tbaa !42
  %344 = getelementptr inbounds nuw i8, ptr %154, i64 3136
  %345 = getelementptr inbounds double, ptr %344, i64 %6
  store double %325, ptr %345, align 8, !tbaa !42
  %346 = getelementptr inbounds nuw i8, ptr %154, i64 3520
  %347 = getelementptr inbounds double, ptr %346, i64 %6
  store double %220, ptr %347, align 8, !tbaa !42
  %348 = load double, ptr %332, align 8, !tbaa !42
  %349 = getelementptr inbounds nuw i8, ptr %154, i64 3200
  %350 = getelementptr inbounds double, ptr %349, i64 %6
  store double %348, ptr %350, align 8, !tbaa !42
  %351 = getelementptr inbounds nuw i8, ptr %154, i64 3648
  %352 = getelementptr inbounds double, ptr %351, i64 %6
  store double %314, ptr %352, align 8, !tbaa !42
  %353 = getelementptr double, ptr %327, i64 %6
  %354 = getelementptr i8, ptr %353, i64 320
  store double 0.000000e+00, ptr %354, align 8, !tbaa !42
  %355 = getelementptr i8, ptr %353, i64 384
  store double 0.000000e+00, ptr %355, align 8, !tbaa !42
  %356 = getelementptr i8, ptr %353, i64 448
  store double 0.000000e+00, ptr %356, align 8, !tbaa !42
  %357 = getelementptr i8, ptr %353, i64 512
  store double 0.000000e+00, ptr %357, align 8, !tbaa !42
  %358 = getelementptr i8, ptr %353, i64 640
  store double 0.000000e+00, ptr %358, align 8, !tbaa !42
  store double %221, ptr %353, align 8, !tbaa !42
  %359 = getelementptr inbounds nuw i8, ptr %154, i64 3776
  %360 = getelementptr inbounds double, ptr %359, i64 %6
  store double %320, ptr %360, align 8, !tbaa !42
  %361 = getelementptr inbounds nuw i8, ptr %154, i64 3840
  %362 = getelementptr inbounds double, ptr %361, i64 %6
  store double %341, ptr %362, align 8, !tbaa !42
  %363 = getelementptr inbounds nuw i8, ptr %154, i64 3904
  %364 = getelementptr inbounds double, ptr %363, i64 %6
  store double %325, ptr %364, align 8, !tbaa !42
  %365 = getelementptr inbounds nuw i8, ptr %154, i64 4288
  %366 = getelementptr inbounds double, ptr %365, i64 %6
  store double %220, ptr %366, align 8, !tbaa !42
  %367 = getelementptr inbounds nuw i8, ptr %154, i64 3968
  %368 = getelementptr inbounds double, ptr %367, i64 %6
  store double %348, ptr %368, align 8, !tbaa !42
  %369 = getelementptr inbounds nuw i8, ptr %154, i64 4416
  %370 = getelementptr inbounds double, ptr %369, i64 %6
  store double %314, ptr %370, align 8, !tbaa !42
  %371 = getelementptr double, ptr %328, i64 %6
  %372 = getelementptr i8, ptr %371, i64 320
  store double 0.000000e+00, ptr %372, align 8, !tbaa !42
  %373 = getelementptr i8, ptr %371, i64 384
  store double 0.000000e+00, ptr %373, align 8, !tbaa !42
  %374 = getelementptr i8, ptr %371, i64 448
  store double 0.000000e+00, ptr %374, align 8, !tbaa !42
  %375 = getelementptr i8, ptr %371, i64 512
  store double 0.000000e+00, ptr %375, align 8, !tbaa !42
  %376 = getelementptr i8, ptr %371, i64 640
  store double 0.000000e+00, ptr %376, align 8, !tbaa !42
  store double %221, ptr %371, align 8, !tbaa !42
  %377 = load double, ptr %319, align 8, !tbaa !42
  %378 = getelementptr inbounds nuw i8, ptr %154, i64 4544
  %379 = getelementptr inbounds double, ptr %378, i64 %6
  store double %377, ptr %379, align 8, !tbaa !42
  %380 = getelementptr inbounds nuw i8, ptr %154, i64 4608
  %381 = getelementptr inbounds double, ptr %380, i64 %6
  store double %341, ptr %381, align 8, !tbaa !42
  %382 = getelementptr inbounds nuw i8, ptr %154, i64 4672
  %383 = getelementptr inbounds double, ptr %382, i64 %6
  store double %325, ptr %383, align 8, !tbaa !42
  %384 = getelementptr inbounds nuw i8, ptr %154, i64 5056
  %385 = getelementptr inbounds double, ptr %384, i64 %6
  store double %220, ptr %385, align 8, !tbaa !42
  %386 = getelementptr inbounds nuw i8, ptr %154, i64 4736
  %387 = getelementptr inbounds double, ptr %386, i64 %6
  store double %348, ptr %387, align 8, !tbaa !42
  %388 = getelementptr inbounds nuw i8, ptr %154, i64 5184
  %389 = getelementptr inbounds double, ptr %388, i64 %6
  store double %314, ptr %389, align 8, !tbaa !42
  %390 = load double, ptr %330, align 8, !tbaa !42
  %391 = fadd double %325, %390
  %392 = getelementptr inbounds nuw i8, ptr %154, i64 1600
  %393 = getelementptr inbounds double, ptr %392, i64 %6
  store double %391, ptr %393, align 8, !tbaa !42
  %394 = getelementptr inbounds nuw i8, ptr %154, i64 5568
  %395 = getelementptr inbounds nuw i8, ptr %154, i64 6400
  %396 = getelementptr inbounds nuw i8, ptr %154, i64 6464
  %397 = getelementptr inbounds nuw i8, ptr %154, i64 7232
  %398 = getelementptr inbounds double, ptr %394, i64 %6
  store double %220, ptr %398, align 8, !tbaa !42
  %399 = getelementptr inbounds double, ptr %395, i64 %6
  store double %220, ptr %399, align 8, !tbaa !42
  %400 = getelementptr inbounds double, ptr %396, i64 %6
  store double %220, ptr %400, align 8, !tbaa !42
  %401 = getelementptr inbounds double, ptr %397, i64 %6
  store double %220, ptr %401, align 8, !tbaa !42
  %402 = getelementptr inbounds nuw i8, ptr %154, i64 5632
  %403 = getelementptr inbounds nuw i8, ptr %154, i64 5696
  %404 = getelementptr inbounds nuw i8, ptr %154, i64 7296
  %405 = getelementptr inbounds nuw i8, ptr %154, i64 7168
  %406 = getelementptr inbounds nuw i8, ptr %154, i64 6848
  %407 = getelementptr inbounds double, ptr %402, i64 %6
  store double 0.000000e+00, ptr %407, align 8, !tbaa !42
  %408 = getelementptr inbounds double, ptr %403, i64 %6
  store double 0.000000e+00, ptr %408, align 8, !tbaa !42
  %409 = getelementptr inbounds double, ptr %404, i64 %6
  store double 0.000000e+00, ptr %409, align 8, !tbaa !42
  %410 = getelementptr inbounds double, ptr %405, i64 %6
  store double 0.000000e+00, ptr %410, align 8, !tbaa !42
  %411 = getelementptr inbounds double, ptr %406, i64 %6
  store double 0.000000e+00, ptr %411, align 8, !tbaa !42
  %412 = getelementptr inbounds nuw i8, ptr %154, i64 7360
  %413 = getelementptr inbounds i64, ptr %412, i64 %6
  store i64 0, ptr %413, align 8, !tbaa !29
  %414 = getelementptr inbounds nuw i8, ptr %154, i64 7424
  %415 = getelementptr inbounds i64, ptr %414, i64 %6
  store i64 -1, ptr %415, align 8, !tbaa !29
  %416 = getelementptr inbounds nuw i8, ptr %154, i64 7488
  %417 = getelementptr inbounds i64, ptr %416, i64 %6
  store i64 0, ptr %417, align 8, !tbaa !29
  br i1 %175, label %440, label %456

418:                                              ; preds = %273, %418
  %419 = phi i64 [ 0, %273 ], [ %438, %418 ]
  %420 = icmp slt i64 %419, %160
  %421 = select i1 %420, double %274, double 1.000000e+00
  %422 = shl i64 %419, 8
  %423 = getelementptr i8, ptr %277, i64 %422
  %424 = load double, ptr %423, align 8, !tbaa !42
  %425 = fmul double %421, %424
  store double %425, ptr %423, align 8, !tbaa !42
  %426 = fdiv double %421, %221
  %427 = getelementptr i8, ptr %423, i64 64
  %428 = load double, ptr %427, align 8, !tbaa !42
  %429 = fmul double %426, %428
  store double %429, ptr %427, align 8, !tbaa !42
  %430 = fdiv double %426, %221
  %431 = getelementptr i8, ptr %423, i64 128
  %432 = load double, ptr %431, align 8, !tbaa !42
  %433 = fmul double %430, %432
  store double %433, ptr %431, align 8, !tbaa !42
  %434 = fdiv double %430, %221
  %435 = getelementptr i8, ptr %423, i64 192
  %436 = load double, ptr %435, align 8, !tbaa !42
  %437 = fmul double %434, %436
  store double %437, ptr %435, align 8, !tbaa !42
  %438 = add nuw nsw i64 %419, 1
  %439 = icmp slt i64 %419, %155
  br i1 %439, label %418, label %299, !llvm.loop !154

440:                                              ; preds = %299
  %441 = getelementptr inbounds nuw i8, ptr %154, i64 7576
  %442 = load ptr, ptr %441, align 8, !tbaa !57
  %443 = getelementptr double, ptr %442, i64 %6
  %444 = getelementptr inbounds nuw i8, ptr %154, i64 7568
  %445 = load ptr, ptr %444, align 16, !tbaa !46
  %446 = getelementptr double, ptr %445, i64 %6
  %447 = getelementptr inbounds nuw i8, ptr %154, i64 7560
  %448 = load ptr, ptr %447, align 8, !tbaa !58
  %449 = getelementptr double, ptr %448, i64 %6
  %450 = getelementptr inbounds nuw i8, ptr %154, i64 7600
  %451 = load ptr, ptr %450, align 16, !tbaa !47
  %452 = getelementptr double, ptr %451, i64 %6
  %453 = getelementptr inbounds nuw i8, ptr %154, i64 7592
  %454 = load ptr, ptr %453, align 8, !tbaa !61
  %455 = getelementptr double, ptr %454, i64 %6
  br label %469

456:                                              ; preds = %469, %299
  %457 = icmp slt i64 %156, 0
  br i1 %457, label %530, label %458

458:                                              ; preds = %456
  %459 = getelementptr inbounds nuw i8, ptr %154, i64 7744
  %460 = load ptr, ptr %459, align 64, !tbaa !64
  %461 = getelementptr double, ptr %460, i64 %6
  %462 = getelementptr inbounds nuw i8, ptr %154, i64 7736
  %463 = load ptr, ptr %462, align 8, !tbaa !49
  %464 = getelementptr double, ptr %463, i64 %6
  %465 = icmp eq i64 %156, 0
  br i1 %465, label %478, label %466

466:                                              ; preds = %458
  %467 = add nuw i64 %156, 1
  %468 = and i64 %467, -2
  br label %503

469:                                              ; preds = %440, %469
  %470 = phi i64 [ 0, %440 ], [ %476, %469 ]
  %471 = getelementptr <8 x double>, ptr %443, i64 %470
  store double %220, ptr %471, align 8, !tbaa !42
  %472 = getelementptr <8 x double>, ptr %446, i64 %470
  store double %220, ptr %472, align 8, !tbaa !42
  %473 = getelementptr <8 x double>, ptr %449, i64 %470
  store double %220, ptr %473, align 8, !tbaa !42
  %474 = getelementptr <8 x double>, ptr %452, i64 %470
  store double 1.000000e+00, ptr %474, align 8, !tbaa !42
  %475 = getelementptr <8 x double>, ptr %455, i64 %470
  store double 1.000000e+00, ptr %475, align 8, !tbaa !42
  %476 = add nuw nsw i64 %470, 1
  %477 = icmp eq i64 %476, %155
  br i1 %477, label %456, label %469, !llvm.loop !155

478:                                              ; preds = %517, %458
  %479 = phi i64 [ 0, %458 ], [ %521, %517 ]
  %480 = and i64 %156, 1
  %481 = icmp eq i64 %480, 0
  br i1 %481, label %482, label %490

482:                                              ; preds = %478
  %483 = icmp slt i64 %479, %156
  br i1 %483, label %486, label %484

484:                                              ; preds = %482
  %485 = load double, ptr %319, align 8, !tbaa !42
  br label %486

486:                                              ; preds = %484, %482
  %487 = phi double [ %485, %484 ], [ %314, %482 ]
  %488 = getelementptr <8 x double>, ptr %461, i64 %479
  store double %487, ptr %488, align 8, !tbaa !42
  %489 = getelementptr <8 x double>, ptr %464, i64 %479
  store double %487, ptr %489, align 8, !tbaa !42
  br label %490

490:                                              ; preds = %478, %486
  %491 = icmp eq i64 %156, 0
  br i1 %491, label %530, label %492

492:                                              ; preds = %490
  %493 = getelementptr inbounds nuw i8, ptr %154, i64 7696
  %494 = load ptr, ptr %493, align 16, !tbaa !65
  %495 = getelementptr double, ptr %494, i64 %6
  %496 = getelementptr inbounds nuw i8, ptr %154, i64 7688
  %497 = load ptr, ptr %496, align 8, !tbaa !50
  %498 = getelementptr double, ptr %497, i64 %6
  %499 = and i64 %156, 1
  %500 = icmp eq i64 %156, 1
  br i1 %500, label %524, label %501

501:                                              ; preds = %492
  %502 = and i64 %156, 9223372036854775806
  br label %534

503:                                              ; preds = %517, %466
  %504 = phi i64 [ 0, %466 ], [ %521, %517 ]
  %505 = phi i64 [ 0, %466 ], [ %522, %517 ]
  %506 = icmp slt i64 %504, %156
  br i1 %506, label %509, label %507

507:                                              ; preds = %503
  %508 = load double, ptr %319, align 8, !tbaa !42
  br label %509

509:                                              ; preds = %503, %507
  %510 = phi double [ %508, %507 ], [ %314, %503 ]
  %511 = getelementptr <8 x double>, ptr %461, i64 %504
  store double %510, ptr %511, align 8, !tbaa !42
  %512 = getelementptr <8 x double>, ptr %464, i64 %504
  store double %510, ptr %512, align 8, !tbaa !42
  %513 = or disjoint i64 %504, 1
  %514 = icmp slt i64 %513, %156
  br i1 %514, label %517, label %515

515:                                              ; preds = %509
  %516 = load double, ptr %319, align 8, !tbaa !42
  br label %517

517:                                              ; preds = %515, %509
  %518 = phi double [ %516, %515 ], [ %314, %509 ]
  %519 = getelementptr <8 x double>, ptr %461, i64 %513
  store double %518, ptr %519, align 8, !tbaa !42
  %520 = getelementptr <8 x double>, ptr %464, i64 %513
  store double %518, ptr %520, align 8, !tbaa !42
  %521 = add nuw i64 %504, 2
  %522 = add i64 %505, 2
  %523 = icmp eq i64 %522, %468
  br i1 %523, label %478, label %503, !llvm.loop !156

524:                                              ; preds = %534, %492
  %525 = phi i64 [ 0, %492 ], [ %542, %534 ]
  %526 = icmp eq i64 %499, 0
  br i1 %526, label %530, label %527

527:                                              ; preds = %524
  %528 = getelementptr <8 x double>, ptr %495, i64 %525
  store double %220, ptr %528, align 8, !tbaa !42
  %529 = getelementptr <8 x double>, ptr %498, i64 %525
  store double %220, ptr %529, align 8, !tbaa !42
  br label %530

530:                                              ; preds = %527, %524, %456, %490
  %531 = add nuw nsw i64 %153, 1
  %532 = load i64, ptr %27, align 64, !tbaa !16
  %533 = icmp slt i64 %531, %532
  br i1 %533, label %151, label %60, !llvm.loop !157

534:                                              ; preds = %534, %501
  %535 = phi i64 [ 0, %501 ], [ %542, %534 ]
  %536 = phi i64 [ 0, %501 ], [ %543, %534 ]
  %537 = getelementptr <8 x double>, ptr %495, i64 %535
  store double %220, ptr %537, align 8, !tbaa !42
  %538 = getelementptr <8 x double>, ptr %498, i64 %535
  store double %220, ptr %538, align 8, !tbaa !42
  %539 = or disjoint i64 %535, 1
  %540 = getelementptr <8 x double>, ptr %495, i64 %539
  store double %220, ptr %540, align 8, !tbaa !42
  %541 = getelementptr <8 x double>, ptr %498, i64 %539
  store double %220, ptr %541, align 8, !tbaa !42
  %542 = add nuw nsw i64 %535, 2
  %543 = add i64 %536, 2
  %544 = icmp eq i64 %543, %502
  br i1 %544, label %524, label %534, !llvm.loop !158
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fmuladd.v8f64(<8 x double>, <8 x double>, <8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #4

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(5904) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !159
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !160
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %10 = sext i32 %2 to i64
  %11 = getelementptr inbounds [8 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !29
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !29
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 4032
  %18 = getelementptr inbounds double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !42
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !161
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !29
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 2880
  %26 = getelementptr inbounds double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !42
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %29 = getelementptr inbounds double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !42
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
  br i1 %68, label %69, label %36, !llvm.loop !162

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !42
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 3776
  %73 = getelementptr inbounds double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !42
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %76 = getelementptr inbounds double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !42
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 5824
  %78 = getelementptr inbounds [8 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !42
  br label %284

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !42
  %82 = load double, ptr %35, align 8, !tbaa !42
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 4096
  %84 = getelementptr inbounds double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !42
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 4352
  %86 = getelementptr inbounds double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !42
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !42
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 4160
  %90 = getelementptr inbounds double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !42
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !42
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 4224
  %94 = getelementptr inbounds double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !42
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !42
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 4288
  %98 = getelementptr inbounds double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !42
  %99 = load double, ptr %80, align 8, !tbaa !42
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %102 = getelementptr inbounds double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !42
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %215

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %108 = load i64, ptr %107, align 64, !tbaa !16
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %168

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 5896
  %112 = load ptr, ptr %111, align 8, !tbaa !27
  %113 = getelementptr double, ptr %112, i64 %10
  %114 = and i64 %108, 3
  %115 = icmp ult i64 %108, 4
  br i1 %115, label %118, label %116

116:                                              ; preds = %110
  %117 = and i64 %108, 9223372036854775804
  br label %138

118:                                              ; preds = %138, %110
  %119 = phi double [ poison, %110 ], [ %164, %138 ]
  %120 = phi double [ 0.000000e+00, %110 ], [ %164, %138 ]
  %121 = phi i64 [ 0, %110 ], [ %165, %138 ]
  %122 = icmp eq i64 %114, 0
  br i1 %122, label %135, label %123

123:                                              ; preds = %118, %123
  %124 = phi double [ %131, %123 ], [ %120, %118 ]
  %125 = phi i64 [ %132, %123 ], [ %121, %118 ]
  %126 = phi i64 [ %133, %123 ], [ 0, %118 ]
  %127 = getelementptr %struct.Piece, ptr %113, i64 %125, i32 0, i32 2
  %128 = load double, ptr %127, align 8, !tbaa !42
  %129 = getelementptr %struct.Piece, ptr %113, i64 %125, i32 2, i64 5
  %130 = load double, ptr %129, align 8, !tbaa !42
  %131 = tail call double @llvm.fmuladd.f64(double %128, double %130, double %124)
  %132 = add nuw nsw i64 %125, 1
  %133 = add i64 %126, 1
  %134 = icmp eq i64 %133, %114
  br i1 %134, label %135, label %123, !llvm.loop !163

135:                                              ; preds = %123, %118
  %136 = phi double [ %119, %118 ], [ %131, %123 ]
  %137 = fmul double %136, 4.615260e+02
  br label %168

138:                                              ; preds = %138, %116
  %139 = phi double [ 0.000000e+00, %116 ], [ %164, %138 ]
  %140 = phi i64 [ 0, %116 ], [ %165, %138 ]
  %141 = phi i64 [ 0, %116 ], [ %166, %138 ]
  %142 = getelementptr %struct.Piece, ptr %113, i64 %140, i32 0, i32 2
  %143 = load double, ptr %142, align 8, !tbaa !42
  %144 = getelementptr %struct.Piece, ptr %113, i64 %140, i32 2, i64 5
  %145 = load double, ptr %144, align 8, !tbaa !42
  %146 = tail call double @llvm.fmuladd.f64(double %143, double %145, double %139)
  %147 = or disjoint i64 %140, 1
  %148 = getelementptr %struct.Piece, ptr %113, i64 %147, i32 0, i32 2
  %149 = load double, ptr %148, align 8, !tbaa !42
  %150 = getelementptr %struct.Piece, ptr %113, i64 %147, i32 2, i64 5
  %151 = load double, ptr %150, align 8, !tbaa !42
  %152 = tail call double @llvm.fmuladd.f64(double %149, double %151, double %146)
  %153 = or disjoint i64 %140, 2
  %154 = getelementptr %struct.Piece, ptr %113, i64 %153, i32 0, i32 2
  %155 = load double, ptr %154, align 8, !tbaa !42
  %156 = getelementptr %struct.Piece, ptr %113, i64 %153, i32 2, i64 5
  %157 = load double, ptr %156, align 8, !tbaa !42
  %158 = tail call double @llvm.fmuladd.f64(double %155, double %157, double %152)
  %159 = or disjoint i64 %140, 3
  %160 = getelementptr %struct.Piece, ptr %113, i64 %159, i32 0, i32 2
  %161 = load double, ptr %160, align 8, !tbaa !42
  %162 = getelementptr %struct.Piece, ptr %113, i64 %159, i32 2, i64 5
  %163 = load double, ptr %162, align 8, !tbaa !42
  %164 = tail call double @llvm.fmuladd.f64(double %161, double %163, double %158)
  %165 = add nuw nsw i64 %140, 4
  %166 = add i64 %141, 4
  %167 = icmp eq i64 %166, %117
  br i1 %167, label %118, label %138, !llvm.loop !164

168:                                              ; preds = %106, %135
  %169 = phi double [ %137, %135 ], [ 0.000000e+00, %106 ]
  %170 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %171 = getelementptr inbounds double, ptr %170, i64 %10
  %172 = load double, ptr %171, align 8, !tbaa !42
  %173 = fmul double %169, %172
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
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %214 = getelementptr inbounds double, ptr %213, i64 %10
  store double %212, ptr %214, align 8, !tbaa !42
  br label %215

215:                                              ; preds = %79, %168
  %216 = fcmp une double %99, %103
  br i1 %216, label %217, label %256

217:                                              ; preds = %215
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 4736
  %219 = getelementptr inbounds double, ptr %218, i64 %10
  store double %99, ptr %219, align 8, !tbaa !42
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 4992
  %221 = getelementptr inbounds double, ptr %220, i64 %10
  store double %82, ptr %221, align 8, !tbaa !42
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 1856
  %223 = getelementptr inbounds double, ptr %222, i64 %10
  %224 = load double, ptr %223, align 8, !tbaa !42
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 3968
  %226 = getelementptr inbounds double, ptr %225, i64 %10
  store double %224, ptr %226, align 8, !tbaa !42
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %228 = getelementptr inbounds i64, ptr %227, i64 %10
  store i64 -1, ptr %228, align 8, !tbaa !29
  %229 = fcmp oeq double %99, 0.000000e+00
  %230 = fcmp oeq double %99, 3.000000e+00
  %231 = or i1 %229, %230
  br i1 %231, label %232, label %240

232:                                              ; preds = %217
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 2944
  %234 = getelementptr inbounds double, ptr %233, i64 %10
  store double %30, ptr %234, align 8, !tbaa !42
  store double %30, ptr %26, align 8, !tbaa !42
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1792
  %236 = getelementptr inbounds double, ptr %235, i64 %10
  %237 = load double, ptr %236, align 8, !tbaa !42
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 4672
  %239 = getelementptr inbounds double, ptr %238, i64 %10
  store double %237, ptr %239, align 8, !tbaa !42
  br label %240

240:                                              ; preds = %217, %232
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 2304
  %242 = load i64, ptr %241, align 64, !tbaa !16
  %243 = icmp sgt i64 %242, 0
  br i1 %243, label %244, label %256

244:                                              ; preds = %240
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 5896
  %246 = load ptr, ptr %245, align 8, !tbaa !27
  %247 = getelementptr i64, ptr %246, i64 %10
  %248 = sext i1 %230 to i64
  br label %249

249:                                              ; preds = %244, %249
  %250 = phi i64 [ 0, %244 ], [ %253, %249 ]
  %251 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 38
  store i64 -1, ptr %251, align 8, !tbaa !29
  %252 = getelementptr %struct.Piece, ptr %247, i64 %250, i32 39
  store i64 %248, ptr %252, align 8, !tbaa !29
  %253 = add nuw nsw i64 %250, 1
  %254 = load i64, ptr %241, align 64, !tbaa !16
  %255 = icmp slt i64 %253, %254
  br i1 %255, label %249, label %256, !llvm.loop !165

256:                                              ; preds = %249, %240, %215
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4) #7
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !25
  %257 = getelementptr inbounds i64, ptr %4, i64 %10
  store i64 -1, ptr %257, align 8, !tbaa !29
  %258 = load <8 x i64>, ptr %4, align 64, !tbaa !25
  %259 = getelementptr inbounds nuw i8, ptr %0, i64 2816
  %260 = load <8 x double>, ptr %259, align 64, !tbaa !25
  %261 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %262 = load <8 x double>, ptr %261, align 64, !tbaa !25
  %263 = fmul <8 x double> %262, splat (double 5.000000e-01)
  %264 = load <8 x double>, ptr %89, align 64, !tbaa !25
  %265 = fadd <8 x double> %264, %263
  %266 = fadd <8 x double> %265, splat (double -1.000000e-03)
  %267 = fcmp ult <8 x double> %260, %266
  %268 = fsub <8 x double> %264, %263
  %269 = fadd <8 x double> %268, splat (double 1.000000e-03)
  %270 = fcmp ole <8 x double> %260, %269
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %272 = load <8 x i64>, ptr %271, align 64, !tbaa !25
  %273 = select <8 x i1> %270, <8 x i64> splat (i64 -1), <8 x i64> %272
  %274 = select <8 x i1> %267, <8 x i64> %273, <8 x i64> zeroinitializer
  %275 = xor <8 x i64> %274, %272
  %276 = and <8 x i64> %275, %258
  %277 = and <8 x i64> %274, %258
  %278 = xor <8 x i64> %258, splat (i64 -1)
  %279 = and <8 x i64> %272, %278
  %280 = or <8 x i64> %277, %279
  store <8 x i64> %280, ptr %271, align 64, !tbaa !25
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %282 = load <8 x i64>, ptr %281, align 64, !tbaa !25
  %283 = or <8 x i64> %276, %282
  store <8 x i64> %283, ptr %281, align 64, !tbaa !25
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4) #7
  br label %284

284:                                              ; preds = %256, %69
  ret void
}

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
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2304, !6, i64 2312, !6, i64 2320, !6, i64 2328, !6, i64 2336, !7, i64 2368, !7, i64 2432, !7, i64 2816, !7, i64 3200, !7, i64 3584, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5760, !7, i64 5824, !11, i64 5888, !19, i64 5896}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 2312}
!21 = !{!17, !6, i64 2320}
!22 = !{!5, !6, i64 32}
!23 = !{!17, !6, i64 2328}
!24 = !{!5, !9, i64 64}
!25 = !{!7, !7, i64 0}
!26 = !{!17, !6, i64 2336}
!27 = !{!17, !19, i64 5896}
!28 = !{!5, !12, i64 152}
!29 = !{!6, !6, i64 0}
!30 = !{!31, !6, i64 7552}
!31 = !{!"_ZTS5Piece", !32, i64 0, !7, i64 2944, !7, i64 3712, !7, i64 4480, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !6, i64 7552, !11, i64 7560, !11, i64 7568, !11, i64 7576, !11, i64 7584, !11, i64 7592, !11, i64 7600, !11, i64 7608, !11, i64 7616, !11, i64 7624, !11, i64 7632, !11, i64 7640, !11, i64 7648, !11, i64 7656, !11, i64 7664, !11, i64 7672, !11, i64 7680, !11, i64 7688, !11, i64 7696, !11, i64 7704, !11, i64 7712, !11, i64 7720, !11, i64 7728, !11, i64 7736, !11, i64 7744}
!32 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!33 = !{!11, !11, i64 0}
!34 = !{!31, !11, i64 7672}
!35 = distinct !{!35, !36}
!36 = !{!"llvm.loop.mustprogress"}
!37 = !{!17, !11, i64 5888}
!38 = !{!5, !6, i64 0}
!39 = distinct !{!39, !36}
!40 = !{!5, !6, i64 176}
!41 = !{!5, !6, i64 184}
!42 = !{!9, !9, i64 0}
!43 = !{!5, !10, i64 208}
!44 = !{!5, !10, i64 192}
!45 = !{!5, !10, i64 200}
!46 = !{!31, !11, i64 7568}
!47 = !{!31, !11, i64 7600}
!48 = !{!31, !11, i64 7656}
!49 = !{!31, !11, i64 7736}
!50 = !{!31, !11, i64 7688}
!51 = distinct !{!51, !36}
!52 = distinct !{!52, !36}
!53 = distinct !{!53, !36}
!54 = distinct !{!54, !36}
!55 = distinct !{!55, !36}
!56 = distinct !{!56, !36}
!57 = !{!31, !11, i64 7576}
!58 = !{!31, !11, i64 7560}
!59 = !{!31, !11, i64 7584}
!60 = distinct !{!60, !36}
!61 = !{!31, !11, i64 7592}
!62 = distinct !{!62, !36}
!63 = distinct !{!63, !36}
!64 = !{!31, !11, i64 7744}
!65 = !{!31, !11, i64 7696}
!66 = !{!31, !11, i64 7704}
!67 = distinct !{!67, !36}
!68 = distinct !{!68, !36}
!69 = distinct !{!69, !36}
!70 = distinct !{!70, !36}
!71 = !{!31, !11, i64 7648}
!72 = !{!31, !11, i64 7624}
!73 = !{!31, !11, i64 7632}
!74 = !{!31, !11, i64 7640}
!75 = !{!31, !11, i64 7608}
!76 = !{!31, !11, i64 7616}
!77 = distinct !{!77, !36}
!78 = !{!31, !11, i64 7728}
!79 = distinct !{!79, !36}
!80 = !{!31, !11, i64 7712}
!81 = !{!31, !11, i64 7720}
!82 = distinct !{!82, !36}
!83 = distinct !{!83, !36}
!84 = distinct !{!84, !36}
!85 = distinct !{!85, !36}
!86 = !{!87}
!87 = distinct !{!87, !88, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!88 = distinct !{!88, !"_ZL9evaporateR5GroupDv8_d"}
!89 = !{!90, !87}
!90 = distinct !{!90, !91, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d: argument 0"}
!91 = distinct !{!91, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d"}
!92 = distinct !{!92, !36}
!93 = distinct !{!93, !36}
!94 = !{!95}
!95 = distinct !{!95, !96, !"_ZL7outflowRK5GroupDv8_dS2_: argument 0"}
!96 = distinct !{!96, !"_ZL7outflowRK5GroupDv8_dS2_"}
!97 = !{!98}
!98 = distinct !{!98, !99, !"_ZL8condenseR5GroupDv8_d: argument 0"}
!99 = distinct !{!99, !"_ZL8condenseR5GroupDv8_d"}
!100 = distinct !{!100, !36}
!101 = !{!102}
!102 = distinct !{!102, !103, !"_ZL9evaporateR5GroupDv8_d: argument 0"}
!103 = distinct !{!103, !"_ZL9evaporateR5GroupDv8_d"}
!104 = !{!105, !102}
!105 = distinct !{!105, !106, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d: argument 0"}
!106 = distinct !{!106, !"_ZL8flash_ofRK5GroupRK5PieceDv8_d"}
!107 = distinct !{!107, !36}
!108 = distinct !{!108, !36}
!109 = !{!31, !11, i64 7680}
!110 = distinct !{!110, !36}
!111 = distinct !{!111, !36}
!112 = distinct !{!112, !36}
!113 = distinct !{!113, !36}
!114 = distinct !{!114, !36}
!115 = distinct !{!115, !36}
!116 = distinct !{!116, !36}
!117 = distinct !{!117, !36}
!118 = distinct !{!118, !36}
!119 = distinct !{!119, !36}
!120 = !{!31, !11, i64 7664}
!121 = distinct !{!121, !36}
!122 = distinct !{!122, !36}
!123 = distinct !{!123, !36}
!124 = distinct !{!124, !36}
!125 = distinct !{!125, !36}
!126 = distinct !{!126, !36}
!127 = distinct !{!127, !36}
!128 = distinct !{!128, !36}
!129 = distinct !{!129, !36}
!130 = distinct !{!130, !36}
!131 = distinct !{!131, !36}
!132 = distinct !{!132, !36}
!133 = !{!5, !6, i64 40}
!134 = distinct !{!134, !36}
!135 = distinct !{!135, !36}
!136 = !{!5, !6, i64 56}
!137 = !{!10, !10, i64 0}
!138 = !{!5, !12, i64 168}
!139 = !{!5, !10, i64 160}
!140 = distinct !{!140, !36}
!141 = distinct !{!141, !142}
!142 = !{!"llvm.loop.unroll.disable"}
!143 = distinct !{!143, !36}
!144 = distinct !{!144, !142}
!145 = !{!5, !10, i64 80}
!146 = !{!5, !10, i64 72}
!147 = !{!5, !10, i64 96}
!148 = !{!5, !12, i64 104}
!149 = distinct !{!149, !36}
!150 = distinct !{!150, !36}
!151 = distinct !{!151, !36}
!152 = distinct !{!152, !142}
!153 = distinct !{!153, !36}
!154 = distinct !{!154, !36}
!155 = distinct !{!155, !36}
!156 = distinct !{!156, !36}
!157 = distinct !{!157, !36}
!158 = distinct !{!158, !36}
!159 = !{!5, !10, i64 88}
!160 = !{!5, !12, i64 112}
!161 = !{!5, !12, i64 120}
!162 = distinct !{!162, !36}
!163 = distinct !{!163, !142}
!164 = distinct !{!164, !36}
!165 = distinct !{!165, !36}
