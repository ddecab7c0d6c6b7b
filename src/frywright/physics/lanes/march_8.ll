; Made by scripts/lanes.py from sources of sha256 8a0e856ea36847a0ab006e0662aacc667710fe80eac8fffa4a89e7d916837fd6.
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
  %34 = getelementptr inbounds nuw i8, ptr %1, i64 6016
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 5960
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
  %114 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  store ptr %113, ptr %114, align 64, !tbaa !37
  %115 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %116 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  br label %117

117:                                              ; preds = %112, %127
  %118 = phi i64 [ 0, %112 ], [ %128, %127 ]
  %119 = load i64, ptr %33, align 32, !tbaa !26
  %120 = load i64, ptr %0, align 8, !tbaa !38
  %121 = icmp slt i64 %119, %120
  %122 = trunc nuw nsw i64 %118 to i32
  br i1 %121, label %123, label %124

123:                                              ; preds = %117
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %122) #6
  br label %127

124:                                              ; preds = %117
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %122, i64 noundef 0) #6
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
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 5312
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %134 = load i64, ptr %132, align 8, !tbaa !40
  %135 = load i64, ptr %133, align 8, !tbaa !41
  %136 = sub nsw i64 %134, %135
  %137 = icmp slt i64 %136, 16
  br i1 %137, label %4752, label %138

138:                                              ; preds = %130
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 5888
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 2312
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 2320
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 5568
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 4416
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 4480
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 4544
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 4800
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 5120
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 2304
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 5960
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 2336
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 5376
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 1920
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1984
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 3776
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 4992
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 4736
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 3968
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 1664
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 4096
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 4352
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 4928
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 3904
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 3840
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 5504
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 3584
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 3648
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 3712
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 2432
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 2816
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 3200
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 5440
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 5248
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %182 = getelementptr inbounds nuw i8, ptr %0, i64 136
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 5696
  %184 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %185 = getelementptr inbounds nuw i8, ptr %0, i64 128
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 5184
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 2112
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 1792
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 2048
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 4608
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 4160
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 2368
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 2328
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 4864
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 4672
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 1728
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 320
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 5056
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 4224
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 4288
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 1856
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 5952
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 4032
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 5632
  %237 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %239 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %240 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 5824
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 2176
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 2496
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 3264
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 2880
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 3328
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 2944
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 2560
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 3392
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 3008
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 2624
  %266 = getelementptr inbounds nuw i8, ptr %1, i64 3456
  %267 = getelementptr inbounds nuw i8, ptr %1, i64 3072
  %268 = getelementptr inbounds nuw i8, ptr %1, i64 2688
  %269 = getelementptr inbounds nuw i8, ptr %1, i64 3520
  %270 = getelementptr inbounds nuw i8, ptr %1, i64 3136
  %271 = getelementptr inbounds nuw i8, ptr %1, i64 2752
  %272 = getelementptr inbounds nuw i8, ptr %1, i64 5896
  %273 = getelementptr inbounds nuw i8, ptr %1, i64 5904
  %274 = getelementptr inbounds nuw i8, ptr %1, i64 5912
  %275 = getelementptr inbounds nuw i8, ptr %1, i64 5920
  %276 = getelementptr inbounds nuw i8, ptr %1, i64 5928
  %277 = getelementptr inbounds nuw i8, ptr %1, i64 5936
  %278 = getelementptr inbounds nuw i8, ptr %1, i64 5944
  br label %279

279:                                              ; preds = %540, %138
  %280 = phi i64 [ 0, %138 ], [ %541, %540 ]
  %281 = phi i1 [ true, %138 ], [ %542, %540 ]
  %282 = getelementptr inbounds nuw i64, ptr %131, i64 %280
  %283 = load i64, ptr %282, align 8, !tbaa !29
  %284 = icmp eq i64 %283, 0
  br i1 %284, label %536, label %285

285:                                              ; preds = %279
  %286 = getelementptr inbounds nuw [8 x double], ptr %139, i64 0, i64 %280
  %287 = load double, ptr %286, align 8, !tbaa !42
  %288 = fcmp oeq double %287, 0.000000e+00
  br i1 %288, label %536, label %289

289:                                              ; preds = %285
  %290 = load i64, ptr %140, align 8, !tbaa !20
  %291 = load i64, ptr %141, align 16, !tbaa !21
  %292 = getelementptr inbounds nuw [8 x i64], ptr %142, i64 0, i64 %280
  %293 = load i64, ptr %292, align 8, !tbaa !29
  %294 = load ptr, ptr %143, align 8, !tbaa !43
  %295 = mul nsw i64 %293, 40
  %296 = getelementptr inbounds i8, ptr %294, i64 %295
  %297 = getelementptr inbounds nuw double, ptr %144, i64 %280
  %298 = load double, ptr %297, align 8, !tbaa !42
  store double %298, ptr %296, align 8, !tbaa !42
  %299 = getelementptr inbounds nuw double, ptr %145, i64 %280
  %300 = load double, ptr %299, align 8, !tbaa !42
  %301 = getelementptr inbounds nuw i8, ptr %296, i64 8
  store double %300, ptr %301, align 8, !tbaa !42
  %302 = getelementptr inbounds nuw double, ptr %146, i64 %280
  %303 = load double, ptr %302, align 8, !tbaa !42
  %304 = getelementptr inbounds nuw i8, ptr %296, i64 16
  store double %303, ptr %304, align 8, !tbaa !42
  %305 = getelementptr inbounds nuw double, ptr %147, i64 %280
  %306 = load double, ptr %305, align 8, !tbaa !42
  %307 = getelementptr inbounds nuw i8, ptr %296, i64 24
  store double %306, ptr %307, align 8, !tbaa !42
  %308 = getelementptr inbounds nuw double, ptr %148, i64 %280
  %309 = load double, ptr %308, align 8, !tbaa !42
  %310 = getelementptr inbounds nuw i8, ptr %296, i64 32
  store double %309, ptr %310, align 8, !tbaa !42
  %311 = load i64, ptr %149, align 64, !tbaa !16
  %312 = icmp sgt i64 %311, 0
  br i1 %312, label %313, label %520

313:                                              ; preds = %289
  %314 = load ptr, ptr %150, align 8, !tbaa !27
  %315 = load ptr, ptr %151, align 8, !tbaa !44
  %316 = mul nsw i64 %311, %293
  %317 = mul i64 %290, 3
  %318 = load ptr, ptr %152, align 8, !tbaa !45
  %319 = icmp sgt i64 %290, 0
  %320 = getelementptr inbounds nuw double, ptr %10, i64 %280
  %321 = shl i64 %290, 4
  %322 = getelementptr inbounds nuw double, ptr %11, i64 %280
  %323 = icmp sgt i64 %291, 0
  %324 = and i64 %291, 1
  %325 = icmp eq i64 %291, 1
  %326 = and i64 %291, 9223372036854775806
  %327 = icmp eq i64 %324, 0
  br label %328

328:                                              ; preds = %428, %313
  %329 = phi i64 [ 0, %313 ], [ %495, %428 ]
  %330 = getelementptr inbounds nuw %struct.Piece, ptr %314, i64 %329
  %331 = getelementptr inbounds nuw i8, ptr %330, i64 1536
  %332 = getelementptr inbounds nuw double, ptr %331, i64 %280
  %333 = load double, ptr %332, align 8, !tbaa !42
  %334 = getelementptr inbounds nuw i8, ptr %330, i64 4352
  %335 = getelementptr inbounds nuw double, ptr %334, i64 %280
  %336 = load double, ptr %335, align 8, !tbaa !42
  %337 = add nsw i64 %329, %316
  %338 = mul i64 %317, %337
  %339 = getelementptr inbounds double, ptr %315, i64 %338
  %340 = mul nsw i64 %337, 40
  %341 = getelementptr inbounds i8, ptr %318, i64 %340
  br i1 %319, label %342, label %359

342:                                              ; preds = %328
  %343 = getelementptr inbounds nuw i8, ptr %330, i64 7568
  %344 = load ptr, ptr %343, align 16, !tbaa !46
  %345 = getelementptr inbounds nuw i8, ptr %330, i64 7600
  %346 = load ptr, ptr %345, align 16, !tbaa !47
  %347 = getelementptr double, ptr %346, i64 %280
  %348 = getelementptr double, ptr %339, i64 %290
  %349 = getelementptr inbounds nuw i8, ptr %330, i64 7656
  %350 = load ptr, ptr %349, align 8, !tbaa !48
  %351 = getelementptr inbounds nuw i8, ptr %330, i64 7552
  %352 = load i64, ptr %351, align 64, !tbaa !30
  %353 = getelementptr inbounds nuw i8, ptr %330, i64 4416
  %354 = getelementptr inbounds nuw i8, ptr %330, i64 384
  %355 = getelementptr inbounds nuw i8, ptr %330, i64 448
  %356 = getelementptr inbounds nuw i8, ptr %330, i64 512
  %357 = getelementptr inbounds nuw i8, ptr %330, i64 640
  %358 = getelementptr i8, ptr %339, i64 %321
  br label %372

359:                                              ; preds = %403, %328
  %360 = phi double [ %336, %328 ], [ %411, %403 ]
  br i1 %323, label %361, label %428

361:                                              ; preds = %359
  %362 = getelementptr inbounds nuw i8, ptr %330, i64 7736
  %363 = load ptr, ptr %362, align 8, !tbaa !49
  %364 = getelementptr double, ptr %363, i64 %280
  %365 = getelementptr inbounds nuw i8, ptr %330, i64 768
  %366 = getelementptr inbounds nuw double, ptr %365, i64 %280
  %367 = load double, ptr %366, align 8, !tbaa !42
  %368 = getelementptr inbounds nuw i8, ptr %330, i64 7688
  %369 = load ptr, ptr %368, align 8, !tbaa !50
  %370 = getelementptr double, ptr %369, i64 %280
  %371 = load double, ptr %364, align 8, !tbaa !42
  br i1 %325, label %414, label %497

372:                                              ; preds = %403, %342
  %373 = phi double [ %336, %342 ], [ %411, %403 ]
  %374 = phi i64 [ 0, %342 ], [ %412, %403 ]
  %375 = getelementptr inbounds nuw <8 x double>, ptr %344, i64 %374
  %376 = getelementptr inbounds nuw double, ptr %375, i64 %280
  %377 = load double, ptr %376, align 8, !tbaa !42
  %378 = getelementptr inbounds nuw double, ptr %339, i64 %374
  store double %377, ptr %378, align 8, !tbaa !42
  %379 = getelementptr <8 x double>, ptr %347, i64 %374
  %380 = load double, ptr %379, align 8, !tbaa !42
  %381 = getelementptr double, ptr %348, i64 %374
  store double %380, ptr %381, align 8, !tbaa !42
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %10) #7
  %382 = getelementptr inbounds nuw <8 x double>, ptr %350, i64 %374
  %383 = load <8 x double>, ptr %382, align 64, !tbaa !25
  %384 = icmp slt i64 %374, %352
  br i1 %384, label %385, label %390

385:                                              ; preds = %372
  %386 = load <8 x double>, ptr %331, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %387 = load <8 x double>, ptr %375, align 64, !tbaa !25
  %388 = load <8 x double>, ptr %357, align 64, !tbaa !25
  %389 = fmul <8 x double> %387, %388
  br label %403

390:                                              ; preds = %372
  %391 = load <8 x double>, ptr %353, align 64, !tbaa !25
  %392 = load <8 x double>, ptr %331, align 64, !tbaa !25
  %393 = fsub <8 x double> %391, %392
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %11) #7
  %394 = load <8 x double>, ptr %375, align 64, !tbaa !25
  %395 = load <8 x double>, ptr %354, align 64, !tbaa !25
  %396 = load <8 x double>, ptr %355, align 64, !tbaa !25
  %397 = load <8 x double>, ptr %356, align 64, !tbaa !25
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
  store <8 x double> %406, ptr %10, align 64, !tbaa !25
  %407 = fmul <8 x double> %406, %405
  store <8 x double> %407, ptr %11, align 64, !tbaa !25
  %408 = load double, ptr %320, align 8, !tbaa !42
  %409 = getelementptr double, ptr %358, i64 %374
  store double %408, ptr %409, align 8, !tbaa !42
  %410 = load double, ptr %322, align 8, !tbaa !42
  %411 = fadd double %373, %410
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %11) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %10) #7
  %412 = add nuw nsw i64 %374, 1
  %413 = icmp eq i64 %412, %290
  br i1 %413, label %359, label %372, !llvm.loop !51

414:                                              ; preds = %497, %361
  %415 = phi double [ poison, %361 ], [ %517, %497 ]
  %416 = phi double [ %371, %361 ], [ %512, %497 ]
  %417 = phi double [ %360, %361 ], [ %517, %497 ]
  %418 = phi i64 [ 0, %361 ], [ %510, %497 ]
  br i1 %327, label %428, label %419

419:                                              ; preds = %414
  %420 = getelementptr <8 x double>, ptr %364, i64 %418
  %421 = getelementptr i8, ptr %420, i64 64
  %422 = load double, ptr %421, align 8, !tbaa !42
  %423 = fsub double %422, %416
  %424 = fmul double %367, %423
  %425 = getelementptr <8 x double>, ptr %370, i64 %418
  %426 = load double, ptr %425, align 8, !tbaa !42
  %427 = tail call double @llvm.fmuladd.f64(double %424, double %426, double %417)
  br label %428

428:                                              ; preds = %419, %414, %359
  %429 = phi double [ %360, %359 ], [ %415, %414 ], [ %427, %419 ]
  %430 = getelementptr inbounds nuw i8, ptr %330, i64 960
  %431 = getelementptr inbounds nuw double, ptr %430, i64 %280
  %432 = load double, ptr %431, align 8, !tbaa !42
  %433 = getelementptr inbounds nuw i8, ptr %330, i64 384
  %434 = getelementptr inbounds nuw double, ptr %433, i64 %280
  %435 = load double, ptr %434, align 8, !tbaa !42
  %436 = getelementptr inbounds nuw i8, ptr %330, i64 448
  %437 = getelementptr inbounds nuw double, ptr %436, i64 %280
  %438 = load double, ptr %437, align 8, !tbaa !42
  %439 = getelementptr inbounds nuw i8, ptr %330, i64 512
  %440 = getelementptr inbounds nuw double, ptr %439, i64 %280
  %441 = load double, ptr %440, align 8, !tbaa !42
  %442 = fmul double %432, %441
  %443 = fdiv double %442, 3.000000e+00
  %444 = tail call double @llvm.fmuladd.f64(double %438, double 5.000000e-01, double %443)
  %445 = tail call double @llvm.fmuladd.f64(double %432, double %444, double %435)
  %446 = fmul double %432, %445
  %447 = getelementptr inbounds nuw i8, ptr %330, i64 1408
  %448 = getelementptr inbounds nuw double, ptr %447, i64 %280
  %449 = load double, ptr %448, align 8, !tbaa !42
  %450 = fsub double %449, %333
  %451 = getelementptr inbounds nuw i8, ptr %330, i64 640
  %452 = getelementptr inbounds nuw double, ptr %451, i64 %280
  %453 = load double, ptr %452, align 8, !tbaa !42
  %454 = fmul double %333, %453
  %455 = fmul double %432, %454
  %456 = tail call double @llvm.fmuladd.f64(double %450, double %446, double %455)
  %457 = getelementptr inbounds nuw i8, ptr %330, i64 4096
  %458 = getelementptr inbounds nuw double, ptr %457, i64 %280
  %459 = load double, ptr %458, align 8, !tbaa !42
  %460 = getelementptr inbounds nuw i8, ptr %330, i64 4160
  %461 = getelementptr inbounds nuw double, ptr %460, i64 %280
  %462 = load double, ptr %461, align 8, !tbaa !42
  %463 = fsub double %459, %462
  %464 = fsub double %429, %456
  %465 = fsub double %463, %464
  %466 = fcmp ogt double %459, 0.000000e+00
  %467 = fneg double %459
  %468 = select i1 %466, double %459, double %467
  %469 = fcmp ogt double %462, 0.000000e+00
  %470 = fneg double %462
  %471 = select i1 %469, double %462, double %470
  %472 = fadd double %468, %471
  %473 = fcmp ogt double %465, 0.000000e+00
  %474 = fneg double %465
  %475 = select i1 %473, double %465, double %474
  %476 = fcmp ogt double %472, 1.000000e+00
  %477 = select i1 %476, double %472, double 1.000000e+00
  %478 = fdiv double %475, %477
  store double %478, ptr %341, align 8, !tbaa !42
  %479 = getelementptr inbounds nuw i8, ptr %330, i64 4032
  %480 = getelementptr inbounds nuw double, ptr %479, i64 %280
  %481 = load double, ptr %480, align 8, !tbaa !42
  %482 = getelementptr inbounds nuw i8, ptr %341, i64 8
  store double %481, ptr %482, align 8, !tbaa !42
  %483 = getelementptr inbounds nuw i8, ptr %330, i64 3840
  %484 = getelementptr inbounds nuw double, ptr %483, i64 %280
  %485 = load double, ptr %484, align 8, !tbaa !42
  %486 = getelementptr inbounds nuw i8, ptr %341, i64 16
  store double %485, ptr %486, align 8, !tbaa !42
  %487 = getelementptr inbounds nuw i8, ptr %330, i64 3904
  %488 = getelementptr inbounds nuw double, ptr %487, i64 %280
  %489 = load double, ptr %488, align 8, !tbaa !42
  %490 = getelementptr inbounds nuw i8, ptr %341, i64 24
  store double %489, ptr %490, align 8, !tbaa !42
  %491 = getelementptr inbounds nuw i8, ptr %330, i64 3776
  %492 = getelementptr inbounds nuw double, ptr %491, i64 %280
  %493 = load double, ptr %492, align 8, !tbaa !42
  %494 = getelementptr inbounds nuw i8, ptr %341, i64 32
  store double %493, ptr %494, align 8, !tbaa !42
  %495 = add nuw nsw i64 %329, 1
  %496 = icmp eq i64 %495, %311
  br i1 %496, label %520, label %328, !llvm.loop !52

497:                                              ; preds = %361, %497
  %498 = phi double [ %512, %497 ], [ %371, %361 ]
  %499 = phi double [ %517, %497 ], [ %360, %361 ]
  %500 = phi i64 [ %510, %497 ], [ 0, %361 ]
  %501 = phi i64 [ %518, %497 ], [ 0, %361 ]
  %502 = or disjoint i64 %500, 1
  %503 = getelementptr <8 x double>, ptr %364, i64 %502
  %504 = load double, ptr %503, align 8, !tbaa !42
  %505 = fsub double %504, %498
  %506 = fmul double %367, %505
  %507 = getelementptr <8 x double>, ptr %370, i64 %500
  %508 = load double, ptr %507, align 8, !tbaa !42
  %509 = tail call double @llvm.fmuladd.f64(double %506, double %508, double %499)
  %510 = add nuw nsw i64 %500, 2
  %511 = getelementptr <8 x double>, ptr %364, i64 %510
  %512 = load double, ptr %511, align 8, !tbaa !42
  %513 = fsub double %512, %504
  %514 = fmul double %367, %513
  %515 = getelementptr <8 x double>, ptr %370, i64 %502
  %516 = load double, ptr %515, align 8, !tbaa !42
  %517 = tail call double @llvm.fmuladd.f64(double %514, double %516, double %509)
  %518 = add i64 %501, 2
  %519 = icmp eq i64 %518, %326
  br i1 %519, label %414, label %497, !llvm.loop !53

520:                                              ; preds = %428, %289
  %521 = load i64, ptr %153, align 32, !tbaa !26
  %522 = load i64, ptr %0, align 8, !tbaa !38
  %523 = icmp slt i64 %521, %522
  br i1 %523, label %526, label %524

524:                                              ; preds = %520
  store i64 0, ptr %282, align 8, !tbaa !29
  %525 = getelementptr inbounds nuw i64, ptr %154, i64 %280
  store i64 0, ptr %525, align 8, !tbaa !29
  br label %533

526:                                              ; preds = %520
  %527 = trunc nuw nsw i64 %280 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %527) #6
  %528 = load i64, ptr %282, align 8, !tbaa !29
  %529 = icmp eq i64 %528, 0
  br i1 %529, label %533, label %530

530:                                              ; preds = %526
  %531 = load double, ptr %286, align 8, !tbaa !42
  %532 = fcmp oeq double %531, 0.000000e+00
  br label %533

533:                                              ; preds = %524, %530, %526
  %534 = phi i1 [ true, %526 ], [ %532, %530 ], [ true, %524 ]
  %535 = and i1 %281, %534
  br label %536

536:                                              ; preds = %533, %285, %279
  %537 = phi i1 [ %281, %285 ], [ %535, %533 ], [ %281, %279 ]
  %538 = add nuw nsw i64 %280, 1
  %539 = icmp eq i64 %538, 8
  br i1 %539, label %543, label %540

540:                                              ; preds = %536, %544
  %541 = phi i64 [ %538, %536 ], [ 0, %544 ]
  %542 = phi i1 [ %537, %536 ], [ true, %544 ]
  br label %279, !llvm.loop !54

543:                                              ; preds = %536
  br i1 %537, label %549, label %544

544:                                              ; preds = %4709, %4751, %4748, %3187, %3494, %543
  %545 = load i64, ptr %132, align 8, !tbaa !40
  %546 = load i64, ptr %133, align 8, !tbaa !41
  %547 = sub nsw i64 %545, %546
  %548 = icmp slt i64 %547, 16
  br i1 %548, label %4752, label %540

549:                                              ; preds = %543
  %550 = load <8 x i64>, ptr %131, align 64, !tbaa !25
  %551 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %550)
  %552 = icmp eq i64 %551, 0
  br i1 %552, label %4752, label %553

553:                                              ; preds = %549
  %554 = load <8 x i64>, ptr %154, align 64, !tbaa !25
  %555 = and <8 x i64> %554, %550
  %556 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %555)
  %557 = icmp eq i64 %556, 0
  %558 = load i64, ptr %149, align 64, !tbaa !16
  br i1 %557, label %1160, label %559

559:                                              ; preds = %553
  %560 = load <8 x double>, ptr %155, align 64, !tbaa !25
  %561 = load <8 x double>, ptr %156, align 64, !tbaa !25
  %562 = load <8 x double>, ptr %157, align 64, !tbaa !25
  %563 = load <8 x double>, ptr %158, align 64, !tbaa !25
  %564 = fsub <8 x double> %562, %563
  %565 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %561, <8 x double> %564, <8 x double> %560)
  %566 = load <8 x double>, ptr %159, align 64, !tbaa !25
  %567 = fcmp une <8 x double> %566, splat (double 2.000000e+00)
  %568 = select <8 x i1> %567, <8 x double> splat (double 1.000000e+00), <8 x double> splat (double 5.000000e-01)
  %569 = fmul <8 x double> %565, %568
  %570 = load <8 x double>, ptr %160, align 64, !tbaa !25
  %571 = load <8 x double>, ptr %161, align 64, !tbaa !25
  %572 = fcmp olt <8 x double> %570, %571
  %573 = select <8 x i1> %572, <8 x double> %570, <8 x double> %571
  %574 = fcmp olt <8 x double> %573, %569
  %575 = select <8 x i1> %574, <8 x double> %573, <8 x double> %569
  %576 = load <8 x double>, ptr %162, align 64, !tbaa !25
  %577 = load <8 x double>, ptr %163, align 64, !tbaa !25
  %578 = fadd <8 x double> %576, %577
  %579 = fsub <8 x double> %578, %562
  %580 = fmul <8 x double> %575, splat (double 0x3FF000010C6F7A0B)
  %581 = fcmp ole <8 x double> %579, %580
  %582 = load <8 x double>, ptr %164, align 64, !tbaa !25
  %583 = fcmp ogt <8 x double> %582, %575
  %584 = select <8 x i1> %583, <8 x double> %582, <8 x double> %575
  %585 = icmp ne <8 x i64> %555, zeroinitializer
  %586 = select <8 x i1> %581, <8 x i1> %585, <8 x i1> zeroinitializer
  %587 = select <8 x i1> %586, <8 x double> %584, <8 x double> %582
  store <8 x double> %587, ptr %164, align 64, !tbaa !25
  %588 = fmul <8 x double> %575, splat (double 2.000000e+00)
  %589 = fcmp uge <8 x double> %579, %588
  %590 = fmul <8 x double> %579, splat (double 5.000000e-01)
  %591 = select <8 x i1> %589, <8 x double> %575, <8 x double> %590
  %592 = select <8 x i1> %581, <8 x double> %579, <8 x double> %591
  %593 = icmp sgt i64 %558, 0
  %594 = load <8 x double>, ptr %165, align 64, !tbaa !25
  br i1 %593, label %595, label %642

595:                                              ; preds = %559
  %596 = load ptr, ptr %150, align 8, !tbaa !27
  br label %597

597:                                              ; preds = %595, %597
  %598 = phi <8 x double> [ %592, %595 ], [ %639, %597 ]
  %599 = phi i64 [ 0, %595 ], [ %640, %597 ]
  %600 = getelementptr inbounds nuw %struct.Piece, ptr %596, i64 %599
  %601 = getelementptr inbounds nuw i8, ptr %600, i64 3776
  %602 = load <8 x double>, ptr %601, align 64, !tbaa !25
  %603 = getelementptr inbounds nuw i8, ptr %600, i64 1472
  %604 = load <8 x double>, ptr %603, align 64, !tbaa !25
  %605 = fsub <8 x double> %602, %604
  %606 = getelementptr inbounds nuw i8, ptr %600, i64 832
  %607 = load <8 x double>, ptr %606, align 64, !tbaa !25
  %608 = fmul <8 x double> %605, %607
  %609 = getelementptr inbounds nuw i8, ptr %600, i64 1600
  %610 = load <8 x double>, ptr %609, align 64, !tbaa !25
  %611 = getelementptr inbounds nuw i8, ptr %600, i64 4032
  %612 = load <8 x double>, ptr %611, align 64, !tbaa !25
  %613 = fsub <8 x double> %610, %612
  %614 = getelementptr inbounds nuw i8, ptr %600, i64 7360
  %615 = load <8 x i64>, ptr %614, align 64, !tbaa !25
  %616 = getelementptr inbounds nuw i8, ptr %600, i64 7296
  %617 = load <8 x double>, ptr %616, align 64, !tbaa !25
  %618 = fcmp une <8 x double> %617, splat (double 1.000000e+00)
  %619 = select <8 x i1> %618, <8 x double> %608, <8 x double> %613
  %620 = getelementptr inbounds nuw i8, ptr %600, i64 3840
  %621 = load <8 x double>, ptr %620, align 64, !tbaa !25
  %622 = icmp eq <8 x i64> %615, zeroinitializer
  %623 = select <8 x i1> %622, <8 x double> %621, <8 x double> %619
  %624 = getelementptr inbounds nuw i8, ptr %600, i64 5632
  %625 = load <8 x double>, ptr %624, align 64, !tbaa !25
  %626 = getelementptr inbounds nuw i8, ptr %600, i64 7168
  %627 = load <8 x double>, ptr %626, align 64, !tbaa !25
  %628 = fdiv <8 x double> %627, %594
  %629 = select <8 x i1> %622, <8 x double> %628, <8 x double> zeroinitializer
  %630 = fsub <8 x double> %625, %629
  %631 = fcmp ule <8 x double> %623, zeroinitializer
  %632 = fcmp ule <8 x double> %630, zeroinitializer
  %633 = or <8 x i1> %631, %632
  %634 = fdiv <8 x double> %623, %630
  %635 = fcmp ogt <8 x double> %634, splat (double 1.000000e-03)
  %636 = select <8 x i1> %635, <8 x double> %634, <8 x double> splat (double 1.000000e-03)
  %637 = fcmp olt <8 x double> %598, %636
  %638 = select <8 x i1> %633, <8 x i1> splat (i1 true), <8 x i1> %637
  %639 = select <8 x i1> %638, <8 x double> %598, <8 x double> %636
  %640 = add nuw nsw i64 %599, 1
  %641 = icmp eq i64 %640, %558
  br i1 %641, label %642, label %597, !llvm.loop !55

642:                                              ; preds = %597, %559
  %643 = phi <8 x double> [ %592, %559 ], [ %639, %597 ]
  %644 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %645 = icmp eq <8 x i64> %555, zeroinitializer
  %646 = select <8 x i1> %645, <8 x double> %644, <8 x double> %643
  store <8 x double> %646, ptr %166, align 64, !tbaa !25
  %647 = load <8 x i64>, ptr %167, align 64, !tbaa !25
  %648 = fdiv <8 x double> %646, %594
  %649 = fdiv <8 x double> splat (double 1.000000e+00), %646
  %650 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %648, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %651 = fadd <8 x double> %648, splat (double 1.000000e+00)
  %652 = fdiv <8 x double> %650, %651
  %653 = fmul <8 x double> %649, %652
  %654 = icmp eq <8 x i64> %647, zeroinitializer
  %655 = select <8 x i1> %654, <8 x double> %653, <8 x double> %649
  %656 = fneg <8 x double> %649
  %657 = fneg <8 x double> %651
  %658 = fmul <8 x double> %649, %657
  %659 = select <8 x i1> %654, <8 x double> %658, <8 x double> %656
  %660 = fmul <8 x double> %648, %648
  %661 = fdiv <8 x double> %660, %651
  %662 = fmul <8 x double> %649, %661
  %663 = select <8 x i1> %654, <8 x double> %662, <8 x double> zeroinitializer
  %664 = load <8 x double>, ptr %168, align 64, !tbaa !25
  %665 = select <8 x i1> %645, <8 x double> %664, <8 x double> %655
  store <8 x double> %665, ptr %168, align 64, !tbaa !25
  %666 = load <8 x double>, ptr %169, align 64, !tbaa !25
  %667 = select <8 x i1> %645, <8 x double> %666, <8 x double> %659
  store <8 x double> %667, ptr %169, align 64, !tbaa !25
  %668 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %669 = select <8 x i1> %645, <8 x double> %668, <8 x double> %663
  store <8 x double> %669, ptr %170, align 64, !tbaa !25
  %670 = select <8 x i1> %654, <8 x double> %648, <8 x double> zeroinitializer
  %671 = load <8 x double>, ptr %172, align 64, !tbaa !25
  %672 = load <8 x double>, ptr %173, align 64, !tbaa !25
  %673 = fsub <8 x double> %671, %672
  %674 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %670, <8 x double> %673, <8 x double> %671)
  %675 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %676 = select <8 x i1> %645, <8 x double> %675, <8 x double> %674
  %677 = load <8 x double>, ptr %244, align 64, !tbaa !25
  %678 = load <8 x double>, ptr %245, align 64, !tbaa !25
  %679 = fsub <8 x double> %677, %678
  %680 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %670, <8 x double> %679, <8 x double> %677)
  %681 = load <8 x double>, ptr %243, align 64, !tbaa !25
  %682 = select <8 x i1> %645, <8 x double> %681, <8 x double> %680
  store <8 x double> %682, ptr %243, align 64, !tbaa !25
  %683 = load <8 x double>, ptr %247, align 64, !tbaa !25
  %684 = load <8 x double>, ptr %248, align 64, !tbaa !25
  %685 = fsub <8 x double> %683, %684
  %686 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %670, <8 x double> %685, <8 x double> %683)
  %687 = load <8 x double>, ptr %246, align 64, !tbaa !25
  %688 = select <8 x i1> %645, <8 x double> %687, <8 x double> %686
  store <8 x double> %688, ptr %246, align 64, !tbaa !25
  %689 = load <8 x double>, ptr %250, align 64, !tbaa !25
  %690 = load <8 x double>, ptr %251, align 64, !tbaa !25
  %691 = fsub <8 x double> %689, %690
  %692 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %670, <8 x double> %691, <8 x double> %689)
  %693 = load <8 x double>, ptr %249, align 64, !tbaa !25
  %694 = select <8 x i1> %645, <8 x double> %693, <8 x double> %692
  store <8 x double> %694, ptr %249, align 64, !tbaa !25
  %695 = load <8 x double>, ptr %253, align 64, !tbaa !25
  %696 = load <8 x double>, ptr %254, align 64, !tbaa !25
  %697 = fsub <8 x double> %695, %696
  %698 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %670, <8 x double> %697, <8 x double> %695)
  %699 = load <8 x double>, ptr %252, align 64, !tbaa !25
  %700 = select <8 x i1> %645, <8 x double> %699, <8 x double> %698
  store <8 x double> %700, ptr %252, align 64, !tbaa !25
  %701 = load <8 x double>, ptr %256, align 64, !tbaa !25
  %702 = load <8 x double>, ptr %257, align 64, !tbaa !25
  %703 = fsub <8 x double> %701, %702
  %704 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %670, <8 x double> %703, <8 x double> %701)
  %705 = load <8 x double>, ptr %255, align 64, !tbaa !25
  %706 = select <8 x i1> %645, <8 x double> %705, <8 x double> %704
  store <8 x double> %706, ptr %255, align 64, !tbaa !25
  %707 = load <8 x i64>, ptr %174, align 64, !tbaa !25
  %708 = load <8 x double>, ptr %175, align 64, !tbaa !25
  %709 = icmp eq <8 x i64> %707, zeroinitializer
  %710 = select <8 x i1> %709, <8 x double> zeroinitializer, <8 x double> %708
  %711 = load <8 x double>, ptr %176, align 64, !tbaa !25
  %712 = fsub <8 x double> %710, %711
  %713 = load <8 x double>, ptr %1, align 64, !tbaa !25
  %714 = load <8 x double>, ptr %177, align 64, !tbaa !25
  %715 = load <8 x double>, ptr %178, align 64, !tbaa !25
  %716 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %715, <8 x double> %671, <8 x double> %714)
  %717 = load <8 x double>, ptr %179, align 64, !tbaa !25
  %718 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %713, <8 x double> %716, <8 x double> %717)
  %719 = fdiv <8 x double> %712, %718
  %720 = and <8 x i64> %647, %555
  %721 = load <8 x double>, ptr %180, align 64, !tbaa !25
  %722 = fcmp une <8 x double> %721, zeroinitializer
  %723 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %724 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %723, <8 x double> %719, <8 x double> %671)
  %725 = icmp eq <8 x i64> %720, zeroinitializer
  %726 = select <8 x i1> %722, <8 x i1> splat (i1 true), <8 x i1> %725
  %727 = select <8 x i1> %726, <8 x double> %676, <8 x double> %724
  store <8 x double> %727, ptr %171, align 64, !tbaa !25
  %728 = load i64, ptr %149, align 64, !tbaa !16
  %729 = icmp sgt i64 %728, 0
  br i1 %729, label %730, label %1070

730:                                              ; preds = %642, %1033
  %731 = phi i64 [ %1034, %1033 ], [ 0, %642 ]
  %732 = load ptr, ptr %150, align 8, !tbaa !27
  %733 = getelementptr inbounds nuw %struct.Piece, ptr %732, i64 %731
  %734 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %735 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %736 = getelementptr inbounds nuw i8, ptr %733, i64 7424
  %737 = load <8 x i64>, ptr %736, align 64, !tbaa !25
  %738 = fdiv <8 x double> %734, %735
  %739 = fdiv <8 x double> splat (double 1.000000e+00), %734
  %740 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %738, <8 x double> splat (double 2.000000e+00), <8 x double> splat (double 1.000000e+00))
  %741 = fadd <8 x double> %738, splat (double 1.000000e+00)
  %742 = fdiv <8 x double> %740, %741
  %743 = fmul <8 x double> %739, %742
  %744 = icmp eq <8 x i64> %737, zeroinitializer
  %745 = select <8 x i1> %744, <8 x double> %743, <8 x double> %739
  %746 = fneg <8 x double> %739
  %747 = fneg <8 x double> %741
  %748 = fmul <8 x double> %739, %747
  %749 = select <8 x i1> %744, <8 x double> %748, <8 x double> %746
  %750 = fmul <8 x double> %738, %738
  %751 = fdiv <8 x double> %750, %741
  %752 = fmul <8 x double> %739, %751
  %753 = select <8 x i1> %744, <8 x double> %752, <8 x double> zeroinitializer
  %754 = getelementptr inbounds nuw i8, ptr %733, i64 5248
  %755 = load <8 x double>, ptr %754, align 64, !tbaa !25
  %756 = select <8 x i1> %645, <8 x double> %755, <8 x double> %745
  store <8 x double> %756, ptr %754, align 64, !tbaa !25
  %757 = getelementptr inbounds nuw i8, ptr %733, i64 5312
  %758 = load <8 x double>, ptr %757, align 64, !tbaa !25
  %759 = select <8 x i1> %645, <8 x double> %758, <8 x double> %749
  store <8 x double> %759, ptr %757, align 64, !tbaa !25
  %760 = getelementptr inbounds nuw i8, ptr %733, i64 5376
  %761 = load <8 x double>, ptr %760, align 64, !tbaa !25
  %762 = select <8 x i1> %645, <8 x double> %761, <8 x double> %753
  store <8 x double> %762, ptr %760, align 64, !tbaa !25
  %763 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %764 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %765 = fdiv <8 x double> %763, %764
  %766 = select <8 x i1> %744, <8 x double> %765, <8 x double> zeroinitializer
  %767 = getelementptr inbounds nuw i8, ptr %733, i64 2944
  %768 = getelementptr inbounds nuw i8, ptr %733, i64 3712
  %769 = getelementptr inbounds nuw i8, ptr %733, i64 4480
  br label %803

770:                                              ; preds = %803
  %771 = load <8 x double>, ptr %767, align 64, !tbaa !25
  %772 = load <8 x double>, ptr %768, align 64, !tbaa !25
  %773 = fcmp olt <8 x double> %771, %772
  %774 = select <8 x i1> %773, <8 x double> %771, <8 x double> %772
  %775 = load <8 x double>, ptr %733, align 64, !tbaa !25
  %776 = fmul <8 x double> %775, splat (double 3.000000e-01)
  %777 = fcmp ogt <8 x double> %774, %776
  %778 = select <8 x i1> %777, <8 x double> %774, <8 x double> %776
  %779 = select <8 x i1> %645, <8 x double> %771, <8 x double> %778
  store <8 x double> %779, ptr %767, align 64, !tbaa !25
  %780 = getelementptr inbounds nuw i8, ptr %733, i64 5632
  %781 = getelementptr inbounds nuw i8, ptr %733, i64 3456
  %782 = load <8 x double>, ptr %781, align 64, !tbaa !25
  %783 = fcmp ogt <8 x double> %782, zeroinitializer
  %784 = select <8 x i1> %783, <8 x double> %782, <8 x double> zeroinitializer
  %785 = load <8 x double>, ptr %780, align 64, !tbaa !25
  %786 = select <8 x i1> %645, <8 x double> %785, <8 x double> %784
  store <8 x double> %786, ptr %780, align 64, !tbaa !25
  %787 = load i64, ptr %140, align 8, !tbaa !20
  %788 = icmp sgt i64 %787, 0
  br i1 %788, label %789, label %816

789:                                              ; preds = %770
  %790 = getelementptr inbounds nuw i8, ptr %733, i64 7568
  %791 = getelementptr inbounds nuw i8, ptr %733, i64 7576
  %792 = getelementptr inbounds nuw i8, ptr %733, i64 7560
  %793 = getelementptr inbounds nuw i8, ptr %733, i64 7656
  %794 = getelementptr inbounds nuw i8, ptr %733, i64 7552
  %795 = getelementptr inbounds nuw i8, ptr %733, i64 4416
  %796 = getelementptr inbounds nuw i8, ptr %733, i64 1536
  %797 = getelementptr inbounds nuw i8, ptr %733, i64 5184
  %798 = getelementptr inbounds nuw i8, ptr %733, i64 384
  %799 = getelementptr inbounds nuw i8, ptr %733, i64 448
  %800 = getelementptr inbounds nuw i8, ptr %733, i64 512
  %801 = getelementptr inbounds nuw i8, ptr %733, i64 640
  %802 = getelementptr inbounds nuw i8, ptr %733, i64 7584
  br label %826

803:                                              ; preds = %730, %803
  %804 = phi i64 [ 0, %730 ], [ %814, %803 ]
  %805 = getelementptr inbounds nuw [12 x <8 x double>], ptr %767, i64 0, i64 %804
  %806 = getelementptr inbounds nuw [12 x <8 x double>], ptr %768, i64 0, i64 %804
  %807 = load <8 x double>, ptr %806, align 64, !tbaa !25
  %808 = getelementptr inbounds nuw [12 x <8 x double>], ptr %769, i64 0, i64 %804
  %809 = load <8 x double>, ptr %808, align 64, !tbaa !25
  %810 = fsub <8 x double> %807, %809
  %811 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %766, <8 x double> %810, <8 x double> %807)
  %812 = load <8 x double>, ptr %805, align 64, !tbaa !25
  %813 = select <8 x i1> %645, <8 x double> %812, <8 x double> %811
  store <8 x double> %813, ptr %805, align 64, !tbaa !25
  %814 = add nuw nsw i64 %804, 1
  %815 = icmp eq i64 %814, 11
  br i1 %815, label %770, label %803, !llvm.loop !56

816:                                              ; preds = %892, %770
  %817 = load i64, ptr %141, align 16, !tbaa !21
  %818 = icmp sgt i64 %817, 0
  br i1 %818, label %819, label %904

819:                                              ; preds = %816
  %820 = getelementptr inbounds nuw i8, ptr %733, i64 7736
  %821 = getelementptr inbounds nuw i8, ptr %733, i64 7688
  %822 = getelementptr inbounds nuw i8, ptr %733, i64 7744
  %823 = getelementptr inbounds nuw i8, ptr %733, i64 7696
  %824 = getelementptr inbounds nuw i8, ptr %733, i64 768
  %825 = getelementptr inbounds nuw i8, ptr %733, i64 7704
  br label %1037

826:                                              ; preds = %789, %892
  %827 = phi i64 [ 0, %789 ], [ %901, %892 ]
  %828 = load ptr, ptr %790, align 16, !tbaa !46
  %829 = getelementptr inbounds nuw <8 x double>, ptr %828, i64 %827
  %830 = load <8 x double>, ptr %829, align 64, !tbaa !25
  %831 = load ptr, ptr %791, align 8, !tbaa !57
  %832 = getelementptr inbounds nuw <8 x double>, ptr %831, i64 %827
  %833 = load <8 x double>, ptr %832, align 64, !tbaa !25
  %834 = fsub <8 x double> %830, %833
  %835 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %766, <8 x double> %834, <8 x double> %830)
  %836 = load ptr, ptr %792, align 8, !tbaa !58
  %837 = getelementptr inbounds nuw <8 x double>, ptr %836, i64 %827
  %838 = load <8 x double>, ptr %837, align 64, !tbaa !25
  %839 = select <8 x i1> %645, <8 x double> %838, <8 x double> %835
  store <8 x double> %839, ptr %837, align 64, !tbaa !25
  %840 = load ptr, ptr %793, align 8, !tbaa !48
  %841 = getelementptr inbounds nuw <8 x double>, ptr %840, i64 %827
  %842 = load <8 x double>, ptr %841, align 64, !tbaa !25
  %843 = load i64, ptr %794, align 64, !tbaa !30
  %844 = icmp slt i64 %827, %843
  br i1 %844, label %845, label %861

845:                                              ; preds = %826
  %846 = load <8 x double>, ptr %796, align 64, !tbaa !25
  %847 = fmul <8 x double> %842, %846
  %848 = load <8 x double>, ptr %757, align 64, !tbaa !25
  %849 = fmul <8 x double> %848, %847
  %850 = load ptr, ptr %790, align 16, !tbaa !46
  %851 = getelementptr inbounds nuw <8 x double>, ptr %850, i64 %827
  %852 = load <8 x double>, ptr %851, align 64, !tbaa !25
  %853 = load <8 x double>, ptr %801, align 64, !tbaa !25
  %854 = fmul <8 x double> %852, %853
  %855 = load <8 x double>, ptr %760, align 64, !tbaa !25
  %856 = fmul <8 x double> %847, %855
  %857 = load ptr, ptr %791, align 8, !tbaa !57
  %858 = getelementptr inbounds nuw <8 x double>, ptr %857, i64 %827
  %859 = load <8 x double>, ptr %858, align 64, !tbaa !25
  %860 = fmul <8 x double> %859, %853
  br label %892

861:                                              ; preds = %826
  %862 = load <8 x double>, ptr %795, align 64, !tbaa !25
  %863 = load <8 x double>, ptr %796, align 64, !tbaa !25
  %864 = fsub <8 x double> %862, %863
  %865 = fmul <8 x double> %842, %864
  %866 = load <8 x double>, ptr %797, align 64, !tbaa !25
  %867 = fsub <8 x double> %866, %863
  %868 = fmul <8 x double> %842, %867
  %869 = load <8 x double>, ptr %757, align 64, !tbaa !25
  %870 = fmul <8 x double> %869, %865
  %871 = load ptr, ptr %790, align 16, !tbaa !46
  %872 = getelementptr inbounds nuw <8 x double>, ptr %871, i64 %827
  %873 = load <8 x double>, ptr %872, align 64, !tbaa !25
  %874 = load <8 x double>, ptr %798, align 64, !tbaa !25
  %875 = load <8 x double>, ptr %799, align 64, !tbaa !25
  %876 = load <8 x double>, ptr %800, align 64, !tbaa !25
  %877 = fmul <8 x double> %873, %876
  %878 = fmul <8 x double> %877, splat (double 0x3FD5555555555555)
  %879 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %875, <8 x double> splat (double 5.000000e-01), <8 x double> %878)
  %880 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %873, <8 x double> %879, <8 x double> %874)
  %881 = fmul <8 x double> %873, %880
  %882 = load <8 x double>, ptr %760, align 64, !tbaa !25
  %883 = fmul <8 x double> %868, %882
  %884 = load ptr, ptr %791, align 8, !tbaa !57
  %885 = getelementptr inbounds nuw <8 x double>, ptr %884, i64 %827
  %886 = load <8 x double>, ptr %885, align 64, !tbaa !25
  %887 = fmul <8 x double> %886, %876
  %888 = fmul <8 x double> %887, splat (double 0x3FD5555555555555)
  %889 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %875, <8 x double> splat (double 5.000000e-01), <8 x double> %888)
  %890 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %886, <8 x double> %889, <8 x double> %874)
  %891 = fmul <8 x double> %886, %890
  br label %892

892:                                              ; preds = %845, %861
  %893 = phi <8 x double> [ %856, %845 ], [ %883, %861 ]
  %894 = phi <8 x double> [ %854, %845 ], [ %881, %861 ]
  %895 = phi <8 x double> [ %849, %845 ], [ %870, %861 ]
  %896 = phi <8 x double> [ %860, %845 ], [ %891, %861 ]
  %897 = fmul <8 x double> %893, %896
  %898 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %895, <8 x double> %894, <8 x double> %897)
  %899 = load ptr, ptr %802, align 32, !tbaa !59
  %900 = getelementptr inbounds nuw <8 x double>, ptr %899, i64 %827
  store <8 x double> %898, ptr %900, align 64, !tbaa !25
  %901 = add nuw nsw i64 %827, 1
  %902 = load i64, ptr %140, align 8, !tbaa !20
  %903 = icmp slt i64 %901, %902
  br i1 %903, label %826, label %816, !llvm.loop !60

904:                                              ; preds = %1037, %816
  %905 = getelementptr inbounds nuw i8, ptr %733, i64 1664
  %906 = load <8 x double>, ptr %905, align 64, !tbaa !25
  %907 = fcmp ogt <8 x double> %906, zeroinitializer
  %908 = bitcast <8 x i1> %907 to i8
  %909 = icmp eq i8 %908, 0
  br i1 %909, label %910, label %914

910:                                              ; preds = %904
  %911 = getelementptr inbounds nuw i8, ptr %733, i64 7168
  %912 = load <8 x double>, ptr %911, align 64, !tbaa !25
  %913 = select <8 x i1> %645, <8 x double> %912, <8 x double> zeroinitializer
  store <8 x double> %913, ptr %911, align 64, !tbaa !25
  br label %1033

914:                                              ; preds = %904
  %915 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %916 = fneg <8 x double> %915
  %917 = getelementptr inbounds nuw i8, ptr %733, i64 1728
  %918 = load <8 x double>, ptr %917, align 64, !tbaa !25
  %919 = fdiv <8 x double> %916, %918
  %920 = fcmp ogt <8 x double> %919, splat (double -7.000000e+02)
  %921 = select <8 x i1> %920, <8 x double> %919, <8 x double> splat (double -7.000000e+02)
  %922 = fcmp olt <8 x double> %921, splat (double 7.000000e+02)
  %923 = select <8 x i1> %922, <8 x double> %921, <8 x double> splat (double 7.000000e+02)
  %924 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %923, <8 x double> splat (double 0x3FF71547652B82FE), <8 x double> splat (double 0x4338000000000000))
  %925 = fadd <8 x double> %924, splat (double 0xC338000000000000)
  %926 = fneg <8 x double> %925
  %927 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %926, <8 x double> splat (double 0x3FE62E42FEFA39EF), <8 x double> %923)
  %928 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %926, <8 x double> splat (double 0x3C7ABC9E3B39803F), <8 x double> %927)
  %929 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %928, <8 x double> splat (double 0x3DE6124613A86D09), <8 x double> splat (double 0x3E21EED8EFF8D898))
  %930 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %929, <8 x double> %928, <8 x double> splat (double 0x3E5AE64567F544E4))
  %931 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %930, <8 x double> %928, <8 x double> splat (double 0x3E927E4FB7789F5C))
  %932 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %931, <8 x double> %928, <8 x double> splat (double 0x3EC71DE3A556C734))
  %933 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %932, <8 x double> %928, <8 x double> splat (double 0x3EFA01A01A01A01A))
  %934 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %933, <8 x double> %928, <8 x double> splat (double 0x3F2A01A01A01A01A))
  %935 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %934, <8 x double> %928, <8 x double> splat (double 0x3F56C16C16C16C17))
  %936 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %935, <8 x double> %928, <8 x double> splat (double 0x3F81111111111111))
  %937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %936, <8 x double> %928, <8 x double> splat (double 0x3FA5555555555555))
  %938 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %937, <8 x double> %928, <8 x double> splat (double 0x3FC5555555555555))
  %939 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %938, <8 x double> %928, <8 x double> splat (double 5.000000e-01))
  %940 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %939, <8 x double> %928, <8 x double> splat (double 1.000000e+00))
  %941 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %940, <8 x double> %928, <8 x double> splat (double 1.000000e+00))
  %942 = bitcast <8 x double> %924 to <8 x i64>
  %943 = shl <8 x i64> %942, splat (i64 52)
  %944 = bitcast <8 x double> %941 to <8 x i64>
  %945 = add <8 x i64> %943, %944
  %946 = bitcast <8 x i64> %945 to <8 x double>
  %947 = fsub <8 x double> splat (double 1.000000e+00), %946
  %948 = getelementptr inbounds nuw i8, ptr %733, i64 4416
  %949 = load <8 x double>, ptr %948, align 64, !tbaa !25
  %950 = getelementptr inbounds nuw i8, ptr %733, i64 7552
  %951 = load i64, ptr %950, align 64, !tbaa !30
  %952 = load i64, ptr %140, align 8, !tbaa !20
  %953 = icmp slt i64 %951, %952
  br i1 %953, label %954, label %963

954:                                              ; preds = %914
  %955 = getelementptr inbounds nuw i8, ptr %733, i64 7568
  %956 = getelementptr inbounds nuw i8, ptr %733, i64 7560
  %957 = getelementptr inbounds nuw i8, ptr %733, i64 1792
  %958 = getelementptr inbounds nuw i8, ptr %733, i64 1856
  %959 = getelementptr inbounds nuw i8, ptr %733, i64 7600
  %960 = getelementptr inbounds nuw i8, ptr %733, i64 7592
  %961 = getelementptr inbounds nuw i8, ptr %733, i64 7656
  %962 = getelementptr inbounds nuw i8, ptr %733, i64 1536
  br label %976

963:                                              ; preds = %976, %914
  %964 = phi <8 x double> [ zeroinitializer, %914 ], [ %1014, %976 ]
  %965 = phi <8 x double> [ zeroinitializer, %914 ], [ %1029, %976 ]
  %966 = getelementptr inbounds nuw i8, ptr %733, i64 3776
  %967 = load <8 x double>, ptr %966, align 64, !tbaa !25
  %968 = fsub <8 x double> %967, %949
  %969 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %964, <8 x double> %968, <8 x double> %965)
  %970 = getelementptr inbounds nuw i8, ptr %733, i64 7168
  %971 = getelementptr inbounds nuw i8, ptr %733, i64 832
  %972 = load <8 x double>, ptr %971, align 64, !tbaa !25
  %973 = fmul <8 x double> %972, %969
  %974 = load <8 x double>, ptr %970, align 64, !tbaa !25
  %975 = select <8 x i1> %645, <8 x double> %974, <8 x double> %973
  store <8 x double> %975, ptr %970, align 64, !tbaa !25
  br label %1033

976:                                              ; preds = %954, %976
  %977 = phi <8 x double> [ zeroinitializer, %954 ], [ %1029, %976 ]
  %978 = phi i64 [ %951, %954 ], [ %1030, %976 ]
  %979 = load ptr, ptr %955, align 16, !tbaa !46
  %980 = getelementptr inbounds <8 x double>, ptr %979, i64 %978
  %981 = load <8 x double>, ptr %980, align 64, !tbaa !25
  %982 = load ptr, ptr %956, align 8, !tbaa !58
  %983 = getelementptr inbounds <8 x double>, ptr %982, i64 %978
  %984 = load <8 x double>, ptr %983, align 64, !tbaa !25
  %985 = fadd <8 x double> %981, %984
  %986 = load <8 x double>, ptr %957, align 64, !tbaa !25
  %987 = fneg <8 x double> %986
  %988 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %985, <8 x double> splat (double 5.000000e-01), <8 x double> %987)
  %989 = load <8 x double>, ptr %958, align 64, !tbaa !25
  %990 = fmul <8 x double> %988, %989
  %991 = fcmp ogt <8 x double> %990, splat (double -5.000000e+00)
  %992 = select <8 x i1> %991, <8 x double> %990, <8 x double> splat (double -5.000000e+00)
  %993 = fcmp olt <8 x double> %992, splat (double 5.000000e+00)
  %994 = select <8 x i1> %993, <8 x double> %992, <8 x double> splat (double 5.000000e+00)
  %995 = fmul <8 x double> %994, %994
  %996 = fadd <8 x double> %995, splat (double 3.780000e+02)
  %997 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %995, <8 x double> %996, <8 x double> splat (double 1.732500e+04))
  %998 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %995, <8 x double> %997, <8 x double> splat (double 1.351350e+05))
  %999 = fmul <8 x double> %994, %998
  %1000 = load <8 x double>, ptr %905, align 64, !tbaa !25
  %1001 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %995, <8 x double> splat (double 2.800000e+01), <8 x double> splat (double 3.150000e+03))
  %1002 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %995, <8 x double> %1001, <8 x double> splat (double 6.237000e+04))
  %1003 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %995, <8 x double> %1002, <8 x double> splat (double 1.351350e+05))
  %1004 = fdiv <8 x double> %999, %1003
  %1005 = fadd <8 x double> %1004, splat (double 1.000000e+00)
  %1006 = fmul <8 x double> %1000, %1005
  %1007 = load ptr, ptr %959, align 16, !tbaa !47
  %1008 = getelementptr inbounds <8 x double>, ptr %1007, i64 %978
  %1009 = load <8 x double>, ptr %1008, align 64, !tbaa !25
  %1010 = fadd <8 x double> %1009, splat (double -1.000000e+00)
  %1011 = fadd <8 x double> %1010, %1006
  %1012 = fcmp ogt <8 x double> %1011, zeroinitializer
  %1013 = select <8 x i1> %1012, <8 x double> %1011, <8 x double> zeroinitializer
  %1014 = fmul <8 x double> %947, %1013
  %1015 = load ptr, ptr %960, align 8, !tbaa !61
  %1016 = getelementptr inbounds <8 x double>, ptr %1015, i64 %978
  %1017 = fsub <8 x double> %1009, %1014
  %1018 = load <8 x double>, ptr %1016, align 64, !tbaa !25
  %1019 = select <8 x i1> %645, <8 x double> %1018, <8 x double> %1017
  store <8 x double> %1019, ptr %1016, align 64, !tbaa !25
  %1020 = load ptr, ptr %961, align 8, !tbaa !48
  %1021 = getelementptr inbounds <8 x double>, ptr %1020, i64 %978
  %1022 = load <8 x double>, ptr %1021, align 64, !tbaa !25
  %1023 = load i64, ptr %950, align 64, !tbaa !30
  %1024 = icmp slt i64 %978, %1023
  %1025 = load <8 x double>, ptr %962, align 64, !tbaa !25
  %1026 = fsub <8 x double> %949, %1025
  %1027 = select i1 %1024, <8 x double> %1025, <8 x double> %1026
  %1028 = fmul <8 x double> %1022, %1027
  %1029 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1014, <8 x double> %1028, <8 x double> %977)
  %1030 = add nsw i64 %978, 1
  %1031 = load i64, ptr %140, align 8, !tbaa !20
  %1032 = icmp slt i64 %1030, %1031
  br i1 %1032, label %976, label %963, !llvm.loop !62

1033:                                             ; preds = %910, %963
  %1034 = add nuw nsw i64 %731, 1
  %1035 = load i64, ptr %149, align 64, !tbaa !16
  %1036 = icmp slt i64 %1034, %1035
  br i1 %1036, label %730, label %1070, !llvm.loop !63

1037:                                             ; preds = %819, %1037
  %1038 = phi i64 [ 0, %819 ], [ %1040, %1037 ]
  %1039 = load ptr, ptr %820, align 8, !tbaa !49
  %1040 = add nuw nsw i64 %1038, 1
  %1041 = getelementptr inbounds nuw <8 x double>, ptr %1039, i64 %1040
  %1042 = load <8 x double>, ptr %1041, align 64, !tbaa !25
  %1043 = getelementptr inbounds nuw <8 x double>, ptr %1039, i64 %1038
  %1044 = load <8 x double>, ptr %1043, align 64, !tbaa !25
  %1045 = fsub <8 x double> %1042, %1044
  %1046 = load ptr, ptr %821, align 8, !tbaa !50
  %1047 = getelementptr inbounds nuw <8 x double>, ptr %1046, i64 %1038
  %1048 = load <8 x double>, ptr %1047, align 64, !tbaa !25
  %1049 = fmul <8 x double> %1045, %1048
  %1050 = load ptr, ptr %822, align 64, !tbaa !64
  %1051 = getelementptr inbounds nuw <8 x double>, ptr %1050, i64 %1040
  %1052 = load <8 x double>, ptr %1051, align 64, !tbaa !25
  %1053 = getelementptr inbounds nuw <8 x double>, ptr %1050, i64 %1038
  %1054 = load <8 x double>, ptr %1053, align 64, !tbaa !25
  %1055 = fsub <8 x double> %1052, %1054
  %1056 = load ptr, ptr %823, align 16, !tbaa !65
  %1057 = getelementptr inbounds nuw <8 x double>, ptr %1056, i64 %1038
  %1058 = load <8 x double>, ptr %1057, align 64, !tbaa !25
  %1059 = fmul <8 x double> %1055, %1058
  %1060 = load <8 x double>, ptr %824, align 64, !tbaa !25
  %1061 = load <8 x double>, ptr %757, align 64, !tbaa !25
  %1062 = load <8 x double>, ptr %760, align 64, !tbaa !25
  %1063 = fmul <8 x double> %1059, %1062
  %1064 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1061, <8 x double> %1049, <8 x double> %1063)
  %1065 = fmul <8 x double> %1060, %1064
  %1066 = load ptr, ptr %825, align 8, !tbaa !66
  %1067 = getelementptr inbounds nuw <8 x double>, ptr %1066, i64 %1038
  store <8 x double> %1065, ptr %1067, align 64, !tbaa !25
  %1068 = load i64, ptr %141, align 16, !tbaa !21
  %1069 = icmp slt i64 %1040, %1068
  br i1 %1069, label %1037, label %904, !llvm.loop !67

1070:                                             ; preds = %1033, %642
  %1071 = phi i64 [ %728, %642 ], [ %1035, %1033 ]
  %1072 = load <8 x double>, ptr %181, align 64, !tbaa !25
  %1073 = fcmp ogt <8 x double> %1072, zeroinitializer
  %1074 = select <8 x i1> %1073, <8 x i64> %555, <8 x i64> zeroinitializer
  %1075 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1074)
  %1076 = icmp eq i64 %1075, 0
  br i1 %1076, label %1160, label %1077

1077:                                             ; preds = %1070
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %7)
  store <8 x i64> %1074, ptr %7, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %8) #7
  store <8 x double> zeroinitializer, ptr %8, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %9) #7
  %1078 = load <8 x double>, ptr %157, align 64, !tbaa !25
  %1079 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %1080 = fadd <8 x double> %1078, %1079
  store <8 x double> %1080, ptr %9, align 64, !tbaa !25
  %1081 = load ptr, ptr %182, align 8
  %1082 = load ptr, ptr %184, align 8
  %1083 = load ptr, ptr %185, align 8
  br label %1084

1084:                                             ; preds = %1152, %1077
  %1085 = phi i64 [ 0, %1077 ], [ %1153, %1152 ]
  %1086 = getelementptr inbounds nuw i64, ptr %7, i64 %1085
  %1087 = load i64, ptr %1086, align 8, !tbaa !29
  %1088 = icmp eq i64 %1087, 0
  br i1 %1088, label %1152, label %1089

1089:                                             ; preds = %1084
  %1090 = getelementptr inbounds nuw [8 x i64], ptr %142, i64 0, i64 %1085
  %1091 = load i64, ptr %1090, align 8, !tbaa !29
  %1092 = shl nsw i64 %1091, 1
  %1093 = getelementptr inbounds i64, ptr %1081, i64 %1092
  %1094 = load i64, ptr %1093, align 8, !tbaa !29
  %1095 = shl nuw nsw i64 %1085, 1
  %1096 = getelementptr inbounds nuw [16 x i64], ptr %183, i64 0, i64 %1095
  %1097 = getelementptr inbounds i64, ptr %1083, i64 %1092
  %1098 = load i64, ptr %1097, align 8, !tbaa !29
  %1099 = shl nsw i64 %1098, 4
  %1100 = getelementptr inbounds i8, ptr %1082, i64 %1099
  %1101 = getelementptr inbounds nuw double, ptr %9, i64 %1085
  %1102 = load double, ptr %1101, align 8, !tbaa !42
  %1103 = load i64, ptr %1096, align 8, !tbaa !29
  %1104 = getelementptr i8, ptr %1100, i64 -16
  %1105 = icmp sgt i64 %1103, 0
  br i1 %1105, label %1106, label %1115

1106:                                             ; preds = %1089, %1112
  %1107 = phi i64 [ %1113, %1112 ], [ %1103, %1089 ]
  %1108 = shl i64 %1107, 4
  %1109 = getelementptr i8, ptr %1104, i64 %1108
  %1110 = load double, ptr %1109, align 8, !tbaa !42
  %1111 = fcmp ugt double %1102, %1110
  br i1 %1111, label %1115, label %1112

1112:                                             ; preds = %1106
  %1113 = add nsw i64 %1107, -1
  store i64 %1113, ptr %1096, align 8, !tbaa !29
  %1114 = icmp sgt i64 %1107, 1
  br i1 %1114, label %1106, label %1115, !llvm.loop !68

1115:                                             ; preds = %1112, %1106, %1089
  %1116 = phi i64 [ %1103, %1089 ], [ 0, %1112 ], [ %1107, %1106 ]
  %1117 = icmp slt i64 %1116, %1094
  br i1 %1117, label %1118, label %1127

1118:                                             ; preds = %1115, %1124
  %1119 = phi i64 [ %1125, %1124 ], [ %1116, %1115 ]
  %1120 = shl nsw i64 %1119, 4
  %1121 = getelementptr inbounds i8, ptr %1100, i64 %1120
  %1122 = load double, ptr %1121, align 8, !tbaa !42
  %1123 = fcmp ule double %1102, %1122
  br i1 %1123, label %1132, label %1124

1124:                                             ; preds = %1118
  %1125 = add i64 %1119, 1
  store i64 %1125, ptr %1096, align 8, !tbaa !29
  %1126 = icmp eq i64 %1125, %1094
  br i1 %1126, label %1127, label %1118, !llvm.loop !69

1127:                                             ; preds = %1124, %1115
  %1128 = shl i64 %1094, 4
  %1129 = getelementptr i8, ptr %1100, i64 %1128
  %1130 = getelementptr i8, ptr %1129, i64 -8
  %1131 = load double, ptr %1130, align 8, !tbaa !42
  br label %1149

1132:                                             ; preds = %1118
  %1133 = shl nsw i64 %1119, 1
  %1134 = or disjoint i64 %1133, 1
  %1135 = getelementptr inbounds double, ptr %1100, i64 %1134
  %1136 = load double, ptr %1135, align 8, !tbaa !42
  %1137 = icmp sgt i64 %1119, 0
  br i1 %1137, label %1138, label %1149

1138:                                             ; preds = %1132
  %1139 = getelementptr inbounds nuw i8, ptr %1100, i64 %1120
  %1140 = getelementptr i8, ptr %1139, i64 -8
  %1141 = load double, ptr %1140, align 8, !tbaa !42
  %1142 = getelementptr i8, ptr %1139, i64 -16
  %1143 = load double, ptr %1142, align 8, !tbaa !42
  %1144 = fsub double %1102, %1143
  %1145 = fsub double %1122, %1143
  %1146 = fdiv double %1144, %1145
  %1147 = fsub double %1136, %1141
  %1148 = tail call double @llvm.fmuladd.f64(double %1146, double %1147, double %1141)
  br label %1149

1149:                                             ; preds = %1138, %1132, %1127
  %1150 = phi double [ %1148, %1138 ], [ %1136, %1132 ], [ %1131, %1127 ]
  %1151 = getelementptr inbounds nuw double, ptr %8, i64 %1085
  store double %1150, ptr %1151, align 8, !tbaa !42
  br label %1152

1152:                                             ; preds = %1149, %1084
  %1153 = add nuw nsw i64 %1085, 1
  %1154 = icmp eq i64 %1153, 8
  br i1 %1154, label %1155, label %1084, !llvm.loop !70

1155:                                             ; preds = %1152
  %1156 = load <8 x double>, ptr %8, align 64, !tbaa !25
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %9) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %8) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %7)
  %1157 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %1158 = icmp eq <8 x i64> %1074, zeroinitializer
  %1159 = select <8 x i1> %1158, <8 x double> %1157, <8 x double> %1156
  store <8 x double> %1159, ptr %171, align 64, !tbaa !25
  br label %1160

1160:                                             ; preds = %1070, %1155, %553
  %1161 = phi i64 [ %1071, %1070 ], [ %1071, %1155 ], [ %558, %553 ]
  %1162 = load <8 x double>, ptr %186, align 64, !tbaa !25
  %1163 = icmp eq <8 x i64> %555, zeroinitializer
  %1164 = select <8 x i1> %1163, <8 x double> %1162, <8 x double> zeroinitializer
  store <8 x double> %1164, ptr %186, align 64, !tbaa !25
  %1165 = icmp sgt i64 %1161, 0
  br i1 %1165, label %1171, label %1166

1166:                                             ; preds = %1160
  %1167 = load <8 x double>, ptr %190, align 64, !tbaa !25
  br label %1807

1168:                                             ; preds = %1801
  %1169 = load <8 x double>, ptr %190, align 64, !tbaa !25
  %1170 = icmp sgt i64 %1805, 0
  br i1 %1170, label %1813, label %1807

1171:                                             ; preds = %1160, %1801
  %1172 = phi i64 [ %1804, %1801 ], [ 0, %1160 ]
  %1173 = load ptr, ptr %150, align 8, !tbaa !27
  %1174 = getelementptr inbounds nuw %struct.Piece, ptr %1173, i64 %1172
  %1175 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %1176 = getelementptr inbounds nuw i8, ptr %1174, i64 6400
  %1177 = load <8 x double>, ptr %1176, align 64, !tbaa !25
  %1178 = fsub <8 x double> %1175, %1177
  %1179 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1178)
  %1180 = getelementptr inbounds nuw i8, ptr %1174, i64 2176
  %1181 = load <8 x double>, ptr %1180, align 64, !tbaa !25
  %1182 = fcmp ogt <8 x double> %1181, splat (double 1.000000e-09)
  %1183 = select <8 x i1> %1182, <8 x double> %1181, <8 x double> splat (double 1.000000e-09)
  %1184 = fdiv <8 x double> %1179, %1183
  %1185 = getelementptr inbounds nuw i8, ptr %1174, i64 1024
  %1186 = load <8 x double>, ptr %1185, align 64, !tbaa !25
  %1187 = fcmp ule <8 x double> %1181, zeroinitializer
  %1188 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1184)
  %1189 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1188)
  %1190 = select <8 x i1> %1187, <8 x double> splat (double 1.000000e+00), <8 x double> %1189
  %1191 = fmul <8 x double> %1186, %1190
  %1192 = getelementptr inbounds nuw i8, ptr %1174, i64 1088
  %1193 = load <8 x double>, ptr %1192, align 64, !tbaa !25
  %1194 = getelementptr inbounds nuw i8, ptr %1174, i64 5632
  %1195 = load <8 x double>, ptr %1194, align 64, !tbaa !25
  %1196 = getelementptr inbounds nuw i8, ptr %1174, i64 5696
  %1197 = load <8 x double>, ptr %1196, align 64, !tbaa !25
  %1198 = fadd <8 x double> %1195, %1197
  %1199 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1193, <8 x double> %1198, <8 x double> %1191)
  %1200 = getelementptr inbounds nuw i8, ptr %1174, i64 1152
  %1201 = load <8 x double>, ptr %1200, align 64, !tbaa !25
  %1202 = fcmp olt <8 x double> %1199, %1201
  %1203 = select <8 x i1> %1202, <8 x double> %1199, <8 x double> %1201
  %1204 = getelementptr inbounds nuw i8, ptr %1174, i64 5312
  %1205 = load <8 x double>, ptr %1204, align 64, !tbaa !25
  %1206 = getelementptr inbounds nuw i8, ptr %1174, i64 3968
  %1207 = load <8 x double>, ptr %1206, align 64, !tbaa !25
  %1208 = getelementptr inbounds nuw i8, ptr %1174, i64 5376
  %1209 = load <8 x double>, ptr %1208, align 64, !tbaa !25
  %1210 = getelementptr inbounds nuw i8, ptr %1174, i64 4736
  %1211 = load <8 x double>, ptr %1210, align 64, !tbaa !25
  %1212 = fmul <8 x double> %1209, %1211
  %1213 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1205, <8 x double> %1207, <8 x double> %1212)
  %1214 = getelementptr inbounds nuw i8, ptr %1174, i64 1216
  %1215 = load <8 x double>, ptr %1214, align 64, !tbaa !25
  %1216 = fneg <8 x double> %1215
  %1217 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1216, <8 x double> %1213, <8 x double> %1203)
  %1218 = getelementptr inbounds nuw i8, ptr %1174, i64 5248
  %1219 = load <8 x double>, ptr %1218, align 64, !tbaa !25
  %1220 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1215, <8 x double> %1219, <8 x double> splat (double 1.000000e+00))
  %1221 = fdiv <8 x double> %1217, %1220
  %1222 = getelementptr inbounds nuw i8, ptr %1174, i64 7488
  %1223 = load <8 x i64>, ptr %1222, align 64, !tbaa !25
  %1224 = load <8 x double>, ptr %187, align 64, !tbaa !25
  %1225 = icmp eq <8 x i64> %1223, zeroinitializer
  %1226 = select <8 x i1> %1225, <8 x double> %1175, <8 x double> %1224
  %1227 = getelementptr inbounds nuw i8, ptr %1174, i64 5504
  store <8 x double> %1226, ptr %1227, align 64, !tbaa !25
  %1228 = load <8 x double>, ptr %188, align 64, !tbaa !25
  %1229 = select <8 x i1> %1225, <8 x double> %1221, <8 x double> %1228
  %1230 = getelementptr inbounds nuw i8, ptr %1174, i64 3200
  store <8 x double> %1229, ptr %1230, align 64, !tbaa !25
  %1231 = getelementptr inbounds nuw i8, ptr %1174, i64 896
  %1232 = load <8 x double>, ptr %1231, align 64, !tbaa !25
  %1233 = fcmp ule <8 x double> %1232, zeroinitializer
  %1234 = getelementptr inbounds nuw i8, ptr %1174, i64 2944
  %1235 = getelementptr inbounds nuw i8, ptr %1174, i64 3072
  %1236 = load <8 x double>, ptr %1235, align 64, !tbaa !25
  %1237 = fcmp ogt <8 x double> %1232, splat (double 1.000000e-30)
  %1238 = select <8 x i1> %1237, <8 x double> %1232, <8 x double> splat (double 1.000000e-30)
  %1239 = fdiv <8 x double> %1236, %1238
  %1240 = fcmp ogt <8 x double> %1239, zeroinitializer
  %1241 = select <8 x i1> %1240, <8 x double> %1239, <8 x double> zeroinitializer
  %1242 = fcmp olt <8 x double> %1241, splat (double 1.000000e+00)
  %1243 = select <8 x i1> %1242, <8 x double> %1241, <8 x double> splat (double 1.000000e+00)
  %1244 = select <8 x i1> %1233, <8 x double> zeroinitializer, <8 x double> %1243
  %1245 = getelementptr inbounds nuw i8, ptr %1174, i64 2112
  %1246 = load <8 x double>, ptr %1245, align 64, !tbaa !25
  %1247 = fmul <8 x double> %1244, splat (double 4.180000e+03)
  %1248 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1247, <8 x double> %1232, <8 x double> %1246)
  %1249 = getelementptr inbounds nuw i8, ptr %1174, i64 4288
  %1250 = load <8 x double>, ptr %1249, align 64, !tbaa !25
  %1251 = getelementptr inbounds nuw i8, ptr %1174, i64 5056
  %1252 = load <8 x double>, ptr %1251, align 64, !tbaa !25
  %1253 = fmul <8 x double> %1209, %1252
  %1254 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1205, <8 x double> %1250, <8 x double> %1253)
  %1255 = getelementptr inbounds nuw i8, ptr %1174, i64 7360
  %1256 = load <8 x i64>, ptr %1255, align 64, !tbaa !25
  %1257 = fcmp ule <8 x double> %1246, zeroinitializer
  %1258 = getelementptr inbounds nuw i8, ptr %1174, i64 6912
  store <8 x double> %1244, ptr %1258, align 64, !tbaa !25
  %1259 = fmul <8 x double> %1219, %1248
  %1260 = icmp eq <8 x i64> %1256, splat (i64 -1)
  %1261 = select <8 x i1> %1257, <8 x i1> splat (i1 true), <8 x i1> %1260
  %1262 = select <8 x i1> %1261, <8 x double> zeroinitializer, <8 x double> %1259
  %1263 = getelementptr inbounds nuw i8, ptr %1174, i64 6976
  store <8 x double> %1262, ptr %1263, align 64, !tbaa !25
  %1264 = fmul <8 x double> %1254, %1248
  %1265 = select <8 x i1> %1261, <8 x double> zeroinitializer, <8 x double> %1264
  %1266 = getelementptr inbounds nuw i8, ptr %1174, i64 7040
  store <8 x double> %1265, ptr %1266, align 64, !tbaa !25
  %1267 = load <8 x double>, ptr %1174, align 64, !tbaa !25
  %1268 = load <8 x double>, ptr %1234, align 64, !tbaa !25
  %1269 = fsub <8 x double> %1267, %1268
  %1270 = fsub <8 x double> splat (double 1.000000e+00), %1244
  %1271 = getelementptr inbounds nuw i8, ptr %1174, i64 1920
  %1272 = load <8 x double>, ptr %1271, align 64, !tbaa !25
  %1273 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1270, <8 x double> %1272, <8 x double> %1269)
  %1274 = load <8 x double>, ptr %189, align 64, !tbaa !25
  %1275 = fdiv <8 x double> splat (double 1.000000e+00), %1274
  %1276 = getelementptr inbounds nuw i8, ptr %1174, i64 2240
  %1277 = load <8 x double>, ptr %1276, align 64, !tbaa !25
  %1278 = fcmp ogt <8 x double> %1277, splat (double 1.000000e-30)
  %1279 = select <8 x i1> %1278, <8 x double> %1277, <8 x double> splat (double 1.000000e-30)
  %1280 = fdiv <8 x double> %1273, %1279
  %1281 = fadd <8 x double> %1275, %1280
  %1282 = getelementptr inbounds nuw i8, ptr %1174, i64 7104
  store <8 x double> %1281, ptr %1282, align 64, !tbaa !25
  %1283 = getelementptr inbounds nuw i8, ptr %1174, i64 6784
  store <8 x double> %1195, ptr %1283, align 64, !tbaa !25
  %1284 = getelementptr inbounds nuw i8, ptr %1174, i64 2560
  %1285 = load <8 x double>, ptr %1284, align 64, !tbaa !25
  %1286 = getelementptr inbounds nuw i8, ptr %1174, i64 2624
  %1287 = load <8 x double>, ptr %1286, align 64, !tbaa !25
  %1288 = getelementptr inbounds nuw i8, ptr %1174, i64 2688
  %1289 = load <8 x double>, ptr %1288, align 64, !tbaa !25
  %1290 = getelementptr inbounds nuw i8, ptr %1174, i64 2752
  %1291 = load <8 x double>, ptr %1290, align 64, !tbaa !25
  %1292 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1291, <8 x double> %1289)
  %1293 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1292, <8 x double> %1287)
  %1294 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1293, <8 x double> %1285)
  %1295 = getelementptr inbounds nuw i8, ptr %1174, i64 3648
  store <8 x double> %1294, ptr %1295, align 64, !tbaa !25
  %1296 = getelementptr inbounds nuw i8, ptr %1174, i64 4416
  %1297 = load <8 x double>, ptr %1296, align 64, !tbaa !25
  %1298 = fmul <8 x double> %1205, %1297
  %1299 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1219, <8 x double> %1294, <8 x double> %1298)
  %1300 = getelementptr inbounds nuw i8, ptr %1174, i64 5184
  %1301 = load <8 x double>, ptr %1300, align 64, !tbaa !25
  %1302 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1209, <8 x double> %1301, <8 x double> %1299)
  %1303 = fmul <8 x double> %1302, splat (double 5.000000e-01)
  %1304 = getelementptr inbounds nuw i8, ptr %1174, i64 6720
  store <8 x double> %1303, ptr %1304, align 64, !tbaa !25
  %1305 = getelementptr inbounds nuw i8, ptr %1174, i64 2304
  %1306 = load <8 x double>, ptr %1305, align 64, !tbaa !25
  %1307 = getelementptr inbounds nuw i8, ptr %1174, i64 2368
  %1308 = load <8 x double>, ptr %1307, align 64, !tbaa !25
  %1309 = getelementptr inbounds nuw i8, ptr %1174, i64 2432
  %1310 = load <8 x double>, ptr %1309, align 64, !tbaa !25
  %1311 = getelementptr inbounds nuw i8, ptr %1174, i64 2496
  %1312 = load <8 x double>, ptr %1311, align 64, !tbaa !25
  %1313 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1312, <8 x double> %1310)
  %1314 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1313, <8 x double> %1308)
  %1315 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1314, <8 x double> %1306)
  %1316 = getelementptr inbounds nuw i8, ptr %1174, i64 6656
  store <8 x double> %1315, ptr %1316, align 64, !tbaa !25
  %1317 = getelementptr inbounds nuw i8, ptr %1174, i64 7552
  %1318 = load i64, ptr %1317, align 64, !tbaa !30
  %1319 = icmp eq i64 %1318, 0
  br i1 %1319, label %1320, label %1332

1320:                                             ; preds = %1171
  %1321 = fdiv <8 x double> %1315, %1268
  %1322 = load i64, ptr %140, align 8, !tbaa !20
  %1323 = getelementptr inbounds nuw i8, ptr %1174, i64 7672
  %1324 = load ptr, ptr %1323, align 8, !tbaa !34
  %1325 = getelementptr inbounds <8 x double>, ptr %1324, i64 %1322
  %1326 = load <8 x double>, ptr %1325, align 64, !tbaa !25
  %1327 = fmul <8 x double> %1321, %1326
  %1328 = getelementptr inbounds nuw i8, ptr %1174, i64 64
  %1329 = load <8 x double>, ptr %1328, align 64, !tbaa !25
  %1330 = fsub <8 x double> %1268, %1329
  %1331 = fdiv <8 x double> splat (double 1.000000e+00), %1330
  br label %1355

1332:                                             ; preds = %1171
  %1333 = getelementptr inbounds nuw i8, ptr %1174, i64 64
  %1334 = load <8 x double>, ptr %1333, align 64, !tbaa !25
  %1335 = fsub <8 x double> %1268, %1334
  %1336 = fdiv <8 x double> splat (double 1.000000e+00), %1335
  %1337 = load i64, ptr %140, align 8, !tbaa !20
  %1338 = getelementptr inbounds nuw i8, ptr %1174, i64 7672
  %1339 = load ptr, ptr %1338, align 8, !tbaa !34
  %1340 = shl nsw i64 %1337, 8
  %1341 = getelementptr inbounds i8, ptr %1339, i64 %1340
  %1342 = load <8 x double>, ptr %1341, align 64, !tbaa !25
  %1343 = getelementptr inbounds nuw i8, ptr %1341, i64 64
  %1344 = load <8 x double>, ptr %1343, align 64, !tbaa !25
  %1345 = getelementptr inbounds nuw i8, ptr %1341, i64 128
  %1346 = load <8 x double>, ptr %1345, align 64, !tbaa !25
  %1347 = getelementptr inbounds nuw i8, ptr %1341, i64 192
  %1348 = load <8 x double>, ptr %1347, align 64, !tbaa !25
  %1349 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1348, <8 x double> %1346)
  %1350 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1349, <8 x double> %1344)
  %1351 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1350, <8 x double> %1342)
  %1352 = icmp sgt i64 %1337, %1318
  %1353 = fmul <8 x double> %1336, %1351
  %1354 = select i1 %1352, <8 x double> %1353, <8 x double> %1351
  br label %1355

1355:                                             ; preds = %1320, %1332
  %1356 = phi <8 x double> [ %1331, %1320 ], [ %1336, %1332 ]
  %1357 = phi <8 x double> [ %1327, %1320 ], [ %1354, %1332 ]
  %1358 = getelementptr inbounds nuw i8, ptr %1174, i64 5568
  %1359 = load <8 x double>, ptr %1358, align 64, !tbaa !25
  %1360 = fcmp ogt <8 x double> %1269, splat (double 0x3D719799812DEA11)
  %1361 = select <8 x i1> %1360, <8 x double> %1269, <8 x double> splat (double 0x3D719799812DEA11)
  %1362 = getelementptr inbounds nuw i8, ptr %1174, i64 64
  %1363 = getelementptr inbounds nuw i8, ptr %1174, i64 6528
  store <8 x double> %1356, ptr %1363, align 64, !tbaa !25
  %1364 = getelementptr inbounds nuw i8, ptr %1174, i64 704
  %1365 = load <8 x double>, ptr %1364, align 64, !tbaa !25
  %1366 = fdiv <8 x double> %1365, %1361
  %1367 = getelementptr inbounds nuw i8, ptr %1174, i64 6592
  store <8 x double> %1366, ptr %1367, align 64, !tbaa !25
  %1368 = getelementptr inbounds nuw i8, ptr %1174, i64 7560
  %1369 = load ptr, ptr %1368, align 8, !tbaa !58
  %1370 = load i64, ptr %140, align 8, !tbaa !20
  %1371 = getelementptr <8 x double>, ptr %1369, i64 %1370
  %1372 = getelementptr i8, ptr %1371, i64 -64
  %1373 = load <8 x double>, ptr %1372, align 64, !tbaa !25
  %1374 = fadd <8 x double> %1359, %1373
  %1375 = fmul <8 x double> %1374, splat (double 5.000000e-01)
  %1376 = getelementptr inbounds nuw i8, ptr %1174, i64 192
  %1377 = load <8 x double>, ptr %1376, align 64, !tbaa !25
  %1378 = getelementptr inbounds nuw i8, ptr %1174, i64 256
  %1379 = load <8 x double>, ptr %1378, align 64, !tbaa !25
  %1380 = getelementptr inbounds nuw i8, ptr %1174, i64 320
  %1381 = load <8 x double>, ptr %1380, align 64, !tbaa !25
  %1382 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1375, <8 x double> %1381, <8 x double> %1379)
  %1383 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1375, <8 x double> %1382, <8 x double> %1377)
  %1384 = fmul <8 x double> %1357, %1383
  %1385 = fmul <8 x double> %1244, %1384
  %1386 = getelementptr inbounds nuw i8, ptr %1174, i64 2048
  %1387 = load <8 x double>, ptr %1386, align 64, !tbaa !25
  %1388 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1385, <8 x double> %1387, <8 x double> splat (double 1.000000e+00))
  %1389 = fdiv <8 x double> splat (double 1.000000e+00), %1388
  %1390 = icmp eq <8 x i64> %1256, zeroinitializer
  %1391 = select <8 x i1> %1390, <8 x double> %1389, <8 x double> splat (double 1.000000e+00)
  %1392 = getelementptr inbounds nuw i8, ptr %1174, i64 6848
  store <8 x double> %1391, ptr %1392, align 64, !tbaa !25
  %1393 = fmul <8 x double> %1384, %1391
  %1394 = getelementptr inbounds nuw i8, ptr %1174, i64 6016
  store <8 x double> %1393, ptr %1394, align 64, !tbaa !25
  %1395 = fmul <8 x double> %1303, splat (double 2.000000e+00)
  %1396 = getelementptr inbounds nuw i8, ptr %1174, i64 384
  %1397 = load <8 x double>, ptr %1396, align 64, !tbaa !25
  %1398 = getelementptr inbounds nuw i8, ptr %1174, i64 448
  %1399 = load <8 x double>, ptr %1398, align 64, !tbaa !25
  %1400 = getelementptr inbounds nuw i8, ptr %1174, i64 512
  %1401 = load <8 x double>, ptr %1400, align 64, !tbaa !25
  %1402 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1359, <8 x double> %1401, <8 x double> %1399)
  %1403 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1359, <8 x double> %1402, <8 x double> %1397)
  %1404 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1395, <8 x double> %1403, <8 x double> %1393)
  %1405 = getelementptr inbounds nuw i8, ptr %1174, i64 6144
  store <8 x double> %1404, ptr %1405, align 64, !tbaa !25
  %1406 = fmul <8 x double> %1229, %1270
  %1407 = getelementptr inbounds nuw i8, ptr %1174, i64 1984
  %1408 = load <8 x double>, ptr %1407, align 64, !tbaa !25
  %1409 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1406, <8 x double> %1408, <8 x double> splat (double 1.000000e+00))
  %1410 = fdiv <8 x double> %1229, %1409
  %1411 = load i64, ptr %141, align 16, !tbaa !21
  %1412 = sitofp i64 %1411 to double
  %1413 = fmul double %1412, 2.000000e+00
  %1414 = insertelement <8 x double> poison, double %1413, i64 0
  %1415 = shufflevector <8 x double> %1414, <8 x double> poison, <8 x i32> zeroinitializer
  %1416 = fmul <8 x double> %1366, %1415
  %1417 = fadd <8 x double> %1410, %1416
  %1418 = fdiv <8 x double> %1410, %1417
  %1419 = fmul <8 x double> %1315, %1416
  %1420 = select <8 x i1> %1390, <8 x double> %1410, <8 x double> %1419
  %1421 = getelementptr inbounds nuw i8, ptr %1174, i64 6080
  store <8 x double> %1420, ptr %1421, align 64, !tbaa !25
  %1422 = fmul <8 x double> %1416, %1418
  %1423 = select <8 x i1> %1390, <8 x double> %1410, <8 x double> %1422
  %1424 = getelementptr inbounds nuw i8, ptr %1174, i64 6208
  store <8 x double> %1423, ptr %1424, align 64, !tbaa !25
  %1425 = select <8 x i1> %1390, <8 x double> splat (double 1.000000e+00), <8 x double> %1418
  %1426 = getelementptr inbounds nuw i8, ptr %1174, i64 6272
  store <8 x double> %1425, ptr %1426, align 64, !tbaa !25
  %1427 = load i64, ptr %140, align 8, !tbaa !20
  br i1 %1319, label %1434, label %1428

1428:                                             ; preds = %1355
  %1429 = fmul <8 x double> %1399, splat (double 5.000000e-01)
  %1430 = fmul <8 x double> %1401, splat (double 0x3FE5555555555555)
  %1431 = load <8 x double>, ptr %1369, align 64, !tbaa !25
  %1432 = getelementptr inbounds nuw i8, ptr %1174, i64 640
  %1433 = load <8 x double>, ptr %1432, align 64, !tbaa !25
  br label %1445

1434:                                             ; preds = %1355
  %1435 = fdiv <8 x double> %1315, %1268
  %1436 = fmul <8 x double> %1399, splat (double 5.000000e-01)
  %1437 = fmul <8 x double> %1401, splat (double 0x3FE5555555555555)
  %1438 = load <8 x double>, ptr %1369, align 64, !tbaa !25
  %1439 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1438, <8 x double> %1401, <8 x double> %1399)
  %1440 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1438, <8 x double> %1439, <8 x double> %1397)
  %1441 = fneg <8 x double> %1438
  %1442 = fmul <8 x double> %1438, %1441
  %1443 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1438, <8 x double> %1437, <8 x double> %1436)
  %1444 = fmul <8 x double> %1442, %1443
  br label %1445

1445:                                             ; preds = %1434, %1428
  %1446 = phi <8 x double> [ %1433, %1428 ], [ %1440, %1434 ]
  %1447 = phi <8 x double> [ %1356, %1428 ], [ %1435, %1434 ]
  %1448 = phi <8 x double> [ %1429, %1428 ], [ %1436, %1434 ]
  %1449 = phi <8 x double> [ %1430, %1428 ], [ %1437, %1434 ]
  %1450 = phi <8 x double> [ %1431, %1428 ], [ %1438, %1434 ]
  %1451 = phi <8 x double> [ zeroinitializer, %1428 ], [ %1444, %1434 ]
  %1452 = getelementptr inbounds nuw i8, ptr %1174, i64 1536
  %1453 = load <8 x double>, ptr %1452, align 64, !tbaa !25
  %1454 = fsub <8 x double> %1294, %1453
  %1455 = icmp sgt i64 %1427, 0
  br i1 %1455, label %1456, label %1632

1456:                                             ; preds = %1445
  %1457 = getelementptr inbounds nuw i8, ptr %1174, i64 640
  %1458 = getelementptr inbounds nuw i8, ptr %1174, i64 7672
  %1459 = getelementptr inbounds nuw i8, ptr %1174, i64 2880
  %1460 = getelementptr inbounds nuw i8, ptr %1174, i64 2816
  %1461 = getelementptr inbounds nuw i8, ptr %1174, i64 576
  %1462 = getelementptr inbounds nuw i8, ptr %1174, i64 7648
  %1463 = getelementptr inbounds nuw i8, ptr %1174, i64 7656
  %1464 = getelementptr inbounds nuw i8, ptr %1174, i64 7584
  %1465 = getelementptr inbounds nuw i8, ptr %1174, i64 7624
  %1466 = getelementptr inbounds nuw i8, ptr %1174, i64 7632
  %1467 = getelementptr inbounds nuw i8, ptr %1174, i64 7640
  %1468 = getelementptr inbounds nuw i8, ptr %1174, i64 7608
  %1469 = getelementptr inbounds nuw i8, ptr %1174, i64 7616
  br label %1470

1470:                                             ; preds = %1456, %1583
  %1471 = phi <8 x double> [ %1450, %1456 ], [ %1587, %1583 ]
  %1472 = phi <8 x double> [ zeroinitializer, %1456 ], [ %1584, %1583 ]
  %1473 = phi <8 x double> [ zeroinitializer, %1456 ], [ %1585, %1583 ]
  %1474 = phi <8 x double> [ zeroinitializer, %1456 ], [ %1586, %1583 ]
  %1475 = phi <8 x double> [ zeroinitializer, %1456 ], [ %1618, %1583 ]
  %1476 = phi <8 x double> [ zeroinitializer, %1456 ], [ %1621, %1583 ]
  %1477 = phi <8 x double> [ %1446, %1456 ], [ %1588, %1583 ]
  %1478 = phi <8 x double> [ %1451, %1456 ], [ %1589, %1583 ]
  %1479 = phi i64 [ 0, %1456 ], [ %1480, %1583 ]
  %1480 = add nuw nsw i64 %1479, 1
  %1481 = icmp slt i64 %1480, %1427
  br i1 %1481, label %1482, label %1573

1482:                                             ; preds = %1470
  %1483 = load ptr, ptr %1368, align 8, !tbaa !58
  %1484 = getelementptr inbounds nuw <8 x double>, ptr %1483, i64 %1480
  %1485 = load <8 x double>, ptr %1484, align 64, !tbaa !25
  %1486 = icmp slt i64 %1480, %1318
  br i1 %1486, label %1487, label %1489

1487:                                             ; preds = %1482
  %1488 = load <8 x double>, ptr %1457, align 64, !tbaa !25
  br label %1499

1489:                                             ; preds = %1482
  %1490 = load <8 x double>, ptr %1396, align 64, !tbaa !25
  %1491 = load <8 x double>, ptr %1398, align 64, !tbaa !25
  %1492 = load <8 x double>, ptr %1400, align 64, !tbaa !25
  %1493 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1485, <8 x double> %1492, <8 x double> %1491)
  %1494 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1485, <8 x double> %1493, <8 x double> %1490)
  %1495 = fneg <8 x double> %1485
  %1496 = fmul <8 x double> %1485, %1495
  %1497 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1485, <8 x double> %1449, <8 x double> %1448)
  %1498 = fmul <8 x double> %1496, %1497
  br label %1499

1499:                                             ; preds = %1489, %1487
  %1500 = phi <8 x double> [ %1488, %1487 ], [ %1494, %1489 ]
  %1501 = phi <8 x double> [ zeroinitializer, %1487 ], [ %1498, %1489 ]
  %1502 = load i64, ptr %1317, align 64, !tbaa !30
  %1503 = icmp eq i64 %1502, 0
  %1504 = load ptr, ptr %1458, align 8, !tbaa !34
  br i1 %1503, label %1505, label %1509

1505:                                             ; preds = %1499
  %1506 = getelementptr inbounds nuw <8 x double>, ptr %1504, i64 %1480
  %1507 = load <8 x double>, ptr %1506, align 64, !tbaa !25
  %1508 = fmul <8 x double> %1447, %1507
  br label %1525

1509:                                             ; preds = %1499
  %1510 = shl nsw i64 %1480, 8
  %1511 = getelementptr inbounds nuw i8, ptr %1504, i64 %1510
  %1512 = load <8 x double>, ptr %1511, align 64, !tbaa !25
  %1513 = getelementptr inbounds nuw i8, ptr %1511, i64 64
  %1514 = load <8 x double>, ptr %1513, align 64, !tbaa !25
  %1515 = getelementptr inbounds nuw i8, ptr %1511, i64 128
  %1516 = load <8 x double>, ptr %1515, align 64, !tbaa !25
  %1517 = getelementptr inbounds nuw i8, ptr %1511, i64 192
  %1518 = load <8 x double>, ptr %1517, align 64, !tbaa !25
  %1519 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1518, <8 x double> %1516)
  %1520 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1519, <8 x double> %1514)
  %1521 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1268, <8 x double> %1520, <8 x double> %1512)
  %1522 = icmp slt i64 %1479, %1502
  %1523 = fmul <8 x double> %1447, %1521
  %1524 = select i1 %1522, <8 x double> %1521, <8 x double> %1523
  br label %1525

1525:                                             ; preds = %1509, %1505
  %1526 = phi <8 x double> [ %1508, %1505 ], [ %1524, %1509 ]
  %1527 = icmp slt i64 %1479, %1502
  br i1 %1527, label %1537, label %1528

1528:                                             ; preds = %1525
  %1529 = fadd <8 x double> %1471, %1485
  %1530 = fmul <8 x double> %1529, splat (double 5.000000e-01)
  %1531 = load <8 x double>, ptr %1376, align 64, !tbaa !25
  %1532 = load <8 x double>, ptr %1378, align 64, !tbaa !25
  %1533 = load <8 x double>, ptr %1380, align 64, !tbaa !25
  %1534 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1530, <8 x double> %1533, <8 x double> %1532)
  %1535 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1530, <8 x double> %1534, <8 x double> %1531)
  %1536 = fmul <8 x double> %1526, %1535
  br label %1558

1537:                                             ; preds = %1525
  %1538 = icmp slt i64 %1480, %1502
  br i1 %1538, label %1539, label %1542

1539:                                             ; preds = %1537
  %1540 = load <8 x double>, ptr %1461, align 64, !tbaa !25
  %1541 = fmul <8 x double> %1526, %1540
  br label %1558

1542:                                             ; preds = %1537
  %1543 = load <8 x double>, ptr %1459, align 64, !tbaa !25
  %1544 = load <8 x double>, ptr %1362, align 64, !tbaa !25
  %1545 = fsub <8 x double> %1268, %1544
  %1546 = fmul <8 x double> %1543, %1545
  %1547 = load <8 x double>, ptr %1460, align 64, !tbaa !25
  %1548 = load <8 x double>, ptr %1461, align 64, !tbaa !25
  %1549 = fdiv <8 x double> %1547, %1548
  %1550 = load <8 x double>, ptr %1376, align 64, !tbaa !25
  %1551 = load <8 x double>, ptr %1378, align 64, !tbaa !25
  %1552 = load <8 x double>, ptr %1380, align 64, !tbaa !25
  %1553 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1485, <8 x double> %1552, <8 x double> %1551)
  %1554 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1485, <8 x double> %1553, <8 x double> %1550)
  %1555 = fdiv <8 x double> %1546, %1554
  %1556 = fadd <8 x double> %1549, %1555
  %1557 = fdiv <8 x double> %1526, %1556
  br label %1558

1558:                                             ; preds = %1528, %1539, %1542
  %1559 = phi <8 x double> [ %1536, %1528 ], [ %1541, %1539 ], [ %1557, %1542 ]
  br i1 %1486, label %1566, label %1560

1560:                                             ; preds = %1558
  %1561 = load ptr, ptr %1462, align 32, !tbaa !71
  %1562 = getelementptr inbounds nuw <8 x double>, ptr %1561, i64 %1480
  %1563 = load <8 x double>, ptr %1562, align 64, !tbaa !25
  %1564 = load <8 x double>, ptr %1304, align 64, !tbaa !25
  %1565 = fmul <8 x double> %1563, %1564
  br label %1566

1566:                                             ; preds = %1558, %1560
  %1567 = phi <8 x double> [ %1565, %1560 ], [ zeroinitializer, %1558 ]
  %1568 = fneg <8 x double> %1567
  %1569 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1568, <8 x double> %1477, <8 x double> %1559)
  %1570 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1567, <8 x double> %1500, <8 x double> %1559)
  %1571 = fadd <8 x double> %1478, %1501
  %1572 = fmul <8 x double> %1571, %1567
  br label %1583

1573:                                             ; preds = %1470
  %1574 = load <8 x double>, ptr %1358, align 64, !tbaa !25
  %1575 = load <8 x double>, ptr %1394, align 64, !tbaa !25
  %1576 = load <8 x double>, ptr %1405, align 64, !tbaa !25
  %1577 = load <8 x double>, ptr %1304, align 64, !tbaa !25
  %1578 = fmul <8 x double> %1577, splat (double -2.000000e+00)
  %1579 = fmul <8 x double> %1574, %1578
  %1580 = fmul <8 x double> %1574, %1579
  %1581 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1574, <8 x double> %1449, <8 x double> %1448)
  %1582 = fmul <8 x double> %1581, %1580
  br label %1583

1583:                                             ; preds = %1573, %1566
  %1584 = phi <8 x double> [ %1569, %1566 ], [ %1575, %1573 ]
  %1585 = phi <8 x double> [ %1570, %1566 ], [ %1576, %1573 ]
  %1586 = phi <8 x double> [ %1572, %1566 ], [ %1582, %1573 ]
  %1587 = phi <8 x double> [ %1485, %1566 ], [ %1471, %1573 ]
  %1588 = phi <8 x double> [ %1500, %1566 ], [ %1477, %1573 ]
  %1589 = phi <8 x double> [ %1501, %1566 ], [ %1478, %1573 ]
  %1590 = load ptr, ptr %1463, align 8, !tbaa !48
  %1591 = getelementptr inbounds nuw <8 x double>, ptr %1590, i64 %1479
  %1592 = load <8 x double>, ptr %1591, align 64, !tbaa !25
  %1593 = icmp slt i64 %1479, %1318
  %1594 = select i1 %1593, <8 x double> %1453, <8 x double> %1454
  %1595 = fmul <8 x double> %1219, %1594
  %1596 = fmul <8 x double> %1595, %1592
  %1597 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1596, <8 x double> %1477, <8 x double> %1584)
  %1598 = fadd <8 x double> %1473, %1597
  %1599 = fsub <8 x double> %1586, %1474
  %1600 = fneg <8 x double> %1596
  %1601 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1600, <8 x double> %1478, <8 x double> %1599)
  %1602 = load ptr, ptr %1464, align 32, !tbaa !59
  %1603 = getelementptr inbounds nuw <8 x double>, ptr %1602, i64 %1479
  %1604 = load <8 x double>, ptr %1603, align 64, !tbaa !25
  %1605 = fsub <8 x double> %1601, %1604
  %1606 = fneg <8 x double> %1472
  %1607 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1606, <8 x double> %1476, <8 x double> %1598)
  %1608 = fdiv <8 x double> splat (double 1.000000e+00), %1607
  %1609 = load ptr, ptr %1465, align 8, !tbaa !72
  %1610 = getelementptr inbounds nuw <8 x double>, ptr %1609, i64 %1479
  store <8 x double> %1605, ptr %1610, align 64, !tbaa !25
  %1611 = load ptr, ptr %1466, align 16, !tbaa !73
  %1612 = getelementptr inbounds nuw <8 x double>, ptr %1611, i64 %1479
  store <8 x double> %1472, ptr %1612, align 64, !tbaa !25
  %1613 = fadd <8 x double> %1472, %1585
  %1614 = fsub <8 x double> %1613, %1598
  %1615 = load ptr, ptr %1467, align 8, !tbaa !74
  %1616 = getelementptr inbounds nuw <8 x double>, ptr %1615, i64 %1479
  store <8 x double> %1614, ptr %1616, align 64, !tbaa !25
  %1617 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1472, <8 x double> %1475, <8 x double> %1605)
  %1618 = fmul <8 x double> %1617, %1608
  %1619 = load ptr, ptr %1468, align 8, !tbaa !75
  %1620 = getelementptr inbounds nuw <8 x double>, ptr %1619, i64 %1479
  store <8 x double> %1618, ptr %1620, align 64, !tbaa !25
  %1621 = fmul <8 x double> %1585, %1608
  %1622 = load ptr, ptr %1469, align 64, !tbaa !76
  %1623 = getelementptr inbounds nuw <8 x double>, ptr %1622, i64 %1479
  store <8 x double> %1621, ptr %1623, align 64, !tbaa !25
  %1624 = icmp eq i64 %1480, %1427
  br i1 %1624, label %1625, label %1470, !llvm.loop !77

1625:                                             ; preds = %1583
  %1626 = load i64, ptr %140, align 8, !tbaa !20
  %1627 = load <8 x double>, ptr %1394, align 64, !tbaa !25
  %1628 = load <8 x double>, ptr %1421, align 64, !tbaa !25
  %1629 = load <8 x double>, ptr %1266, align 64, !tbaa !25
  %1630 = load <8 x double>, ptr %1263, align 64, !tbaa !25
  %1631 = load <8 x i64>, ptr %1255, align 64, !tbaa !25
  br label %1632

1632:                                             ; preds = %1625, %1445
  %1633 = phi <8 x i64> [ %1631, %1625 ], [ %1256, %1445 ]
  %1634 = phi <8 x double> [ %1630, %1625 ], [ %1262, %1445 ]
  %1635 = phi <8 x double> [ %1629, %1625 ], [ %1265, %1445 ]
  %1636 = phi <8 x double> [ %1628, %1625 ], [ %1420, %1445 ]
  %1637 = phi <8 x double> [ %1627, %1625 ], [ %1393, %1445 ]
  %1638 = phi i64 [ %1626, %1625 ], [ %1427, %1445 ]
  %1639 = getelementptr inbounds nuw i8, ptr %1174, i64 7608
  %1640 = load ptr, ptr %1639, align 8, !tbaa !75
  %1641 = add nsw i64 %1638, -1
  %1642 = getelementptr inbounds <8 x double>, ptr %1640, i64 %1641
  %1643 = load <8 x double>, ptr %1642, align 64, !tbaa !25
  %1644 = getelementptr inbounds nuw i8, ptr %1174, i64 7616
  %1645 = load ptr, ptr %1644, align 64, !tbaa !76
  %1646 = getelementptr inbounds <8 x double>, ptr %1645, i64 %1641
  %1647 = load <8 x double>, ptr %1646, align 64, !tbaa !25
  %1648 = fmul <8 x double> %1643, %1637
  %1649 = fsub <8 x double> splat (double 1.000000e+00), %1647
  %1650 = fmul <8 x double> %1637, %1649
  %1651 = load <8 x double>, ptr %1227, align 64, !tbaa !25
  %1652 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1636, <8 x double> %1651, <8 x double> %1648)
  %1653 = fsub <8 x double> %1652, %1635
  %1654 = fadd <8 x double> %1650, %1636
  %1655 = fadd <8 x double> %1654, %1634
  %1656 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1633)
  %1657 = icmp eq i64 %1656, 0
  %1658 = load i64, ptr %141, align 16, !tbaa !21
  br i1 %1657, label %1659, label %1674

1659:                                             ; preds = %1632
  %1660 = icmp slt i64 %1658, 0
  br i1 %1660, label %1665, label %1661

1661:                                             ; preds = %1659
  %1662 = getelementptr inbounds nuw i8, ptr %1174, i64 1408
  %1663 = getelementptr inbounds nuw i8, ptr %1174, i64 7728
  %1664 = load <8 x double>, ptr %1662, align 64, !tbaa !25
  br label %1667

1665:                                             ; preds = %1667, %1659
  %1666 = getelementptr inbounds nuw i8, ptr %1174, i64 5824
  store <8 x double> %1653, ptr %1666, align 64, !tbaa !25
  br label %1801

1667:                                             ; preds = %1661, %1667
  %1668 = phi i64 [ 0, %1661 ], [ %1671, %1667 ]
  %1669 = load ptr, ptr %1663, align 16, !tbaa !78
  %1670 = getelementptr inbounds nuw <8 x double>, ptr %1669, i64 %1668
  store <8 x double> %1664, ptr %1670, align 64, !tbaa !25
  %1671 = add nuw nsw i64 %1668, 1
  %1672 = load i64, ptr %141, align 16, !tbaa !21
  %1673 = icmp slt i64 %1668, %1672
  br i1 %1673, label %1667, label %1665, !llvm.loop !79

1674:                                             ; preds = %1632
  %1675 = load <8 x double>, ptr %1234, align 64, !tbaa !25
  %1676 = load <8 x double>, ptr %1283, align 64, !tbaa !25
  %1677 = getelementptr inbounds nuw i8, ptr %1174, i64 1280
  %1678 = load <8 x double>, ptr %1677, align 64, !tbaa !25
  %1679 = fmul <8 x double> %1676, %1678
  %1680 = load <8 x double>, ptr %1174, align 64, !tbaa !25
  %1681 = fsub <8 x double> %1680, %1675
  %1682 = sitofp i64 %1658 to double
  %1683 = insertelement <8 x double> poison, double %1682, i64 0
  %1684 = shufflevector <8 x double> %1683, <8 x double> poison, <8 x i32> zeroinitializer
  %1685 = fdiv <8 x double> %1681, %1684
  %1686 = load <8 x double>, ptr %1424, align 64, !tbaa !25
  %1687 = load <8 x double>, ptr %1426, align 64, !tbaa !25
  %1688 = getelementptr inbounds nuw i8, ptr %1174, i64 1408
  %1689 = load <8 x double>, ptr %1688, align 64, !tbaa !25
  %1690 = getelementptr inbounds nuw i8, ptr %1174, i64 7728
  %1691 = load ptr, ptr %1690, align 16, !tbaa !78
  %1692 = getelementptr inbounds <8 x double>, ptr %1691, i64 %1658
  store <8 x double> %1689, ptr %1692, align 64, !tbaa !25
  %1693 = icmp sgt i64 %1658, 0
  br i1 %1693, label %1694, label %1785

1694:                                             ; preds = %1674
  %1695 = fneg <8 x double> %1679
  %1696 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1695, <8 x double> %1687, <8 x double> %1686)
  %1697 = fsub <8 x double> splat (double 1.000000e+00), %1687
  %1698 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1679, <8 x double> %1697, <8 x double> %1686)
  %1699 = getelementptr inbounds nuw i8, ptr %1174, i64 7736
  %1700 = getelementptr inbounds nuw i8, ptr %1174, i64 7744
  %1701 = getelementptr inbounds nuw i8, ptr %1174, i64 768
  %1702 = fmul <8 x double> %1679, splat (double -5.000000e-01)
  %1703 = getelementptr inbounds nuw i8, ptr %1174, i64 7704
  %1704 = getelementptr inbounds nuw i8, ptr %1174, i64 7712
  %1705 = getelementptr inbounds nuw i8, ptr %1174, i64 7720
  br label %1706

1706:                                             ; preds = %1694, %1760
  %1707 = phi <8 x double> [ %1698, %1694 ], [ %1762, %1760 ]
  %1708 = phi <8 x double> [ %1696, %1694 ], [ %1763, %1760 ]
  %1709 = phi <8 x double> [ %1651, %1694 ], [ %1778, %1760 ]
  %1710 = phi <8 x double> [ zeroinitializer, %1694 ], [ %1781, %1760 ]
  %1711 = phi <8 x double> [ %1689, %1694 ], [ %1724, %1760 ]
  %1712 = phi i64 [ %1658, %1694 ], [ %1713, %1760 ]
  %1713 = add nsw i64 %1712, -1
  %1714 = uitofp nneg i64 %1713 to double
  %1715 = insertelement <8 x double> poison, double %1714, i64 0
  %1716 = shufflevector <8 x double> %1715, <8 x double> poison, <8 x i32> zeroinitializer
  %1717 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1716, <8 x double> %1685, <8 x double> %1675)
  %1718 = load <8 x double>, ptr %1284, align 64, !tbaa !25
  %1719 = load <8 x double>, ptr %1286, align 64, !tbaa !25
  %1720 = load <8 x double>, ptr %1288, align 64, !tbaa !25
  %1721 = load <8 x double>, ptr %1290, align 64, !tbaa !25
  %1722 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1717, <8 x double> %1721, <8 x double> %1720)
  %1723 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1717, <8 x double> %1722, <8 x double> %1719)
  %1724 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1717, <8 x double> %1723, <8 x double> %1718)
  %1725 = load <8 x double>, ptr %1218, align 64, !tbaa !25
  %1726 = load <8 x double>, ptr %1204, align 64, !tbaa !25
  %1727 = load ptr, ptr %1699, align 8, !tbaa !49
  %1728 = getelementptr inbounds nuw <8 x double>, ptr %1727, i64 %1713
  %1729 = load <8 x double>, ptr %1728, align 64, !tbaa !25
  %1730 = fmul <8 x double> %1726, %1729
  %1731 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1725, <8 x double> %1724, <8 x double> %1730)
  %1732 = load <8 x double>, ptr %1208, align 64, !tbaa !25
  %1733 = load ptr, ptr %1700, align 64, !tbaa !64
  %1734 = getelementptr inbounds nuw <8 x double>, ptr %1733, i64 %1713
  %1735 = load <8 x double>, ptr %1734, align 64, !tbaa !25
  %1736 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1732, <8 x double> %1735, <8 x double> %1731)
  %1737 = fmul <8 x double> %1736, splat (double 5.000000e-01)
  %1738 = icmp eq i64 %1712, 1
  br i1 %1738, label %1754, label %1739

1739:                                             ; preds = %1706
  %1740 = load <8 x double>, ptr %1701, align 64, !tbaa !25
  %1741 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1737, <8 x double> %1740, <8 x double> %1702)
  %1742 = load <8 x double>, ptr %1367, align 64, !tbaa !25
  %1743 = fmul <8 x double> %1684, %1742
  %1744 = load <8 x double>, ptr %1305, align 64, !tbaa !25
  %1745 = load <8 x double>, ptr %1307, align 64, !tbaa !25
  %1746 = load <8 x double>, ptr %1309, align 64, !tbaa !25
  %1747 = load <8 x double>, ptr %1311, align 64, !tbaa !25
  %1748 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1717, <8 x double> %1747, <8 x double> %1746)
  %1749 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1717, <8 x double> %1748, <8 x double> %1745)
  %1750 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1717, <8 x double> %1749, <8 x double> %1744)
  %1751 = fmul <8 x double> %1743, %1750
  %1752 = fsub <8 x double> %1751, %1741
  %1753 = fadd <8 x double> %1741, %1751
  br label %1760

1754:                                             ; preds = %1706
  %1755 = load <8 x double>, ptr %1421, align 64, !tbaa !25
  %1756 = load <8 x double>, ptr %1701, align 64, !tbaa !25
  %1757 = fmul <8 x double> %1737, splat (double -2.000000e+00)
  %1758 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1757, <8 x double> %1756, <8 x double> %1755)
  %1759 = fadd <8 x double> %1679, %1758
  br label %1760

1760:                                             ; preds = %1754, %1739
  %1761 = phi <8 x double> [ %1740, %1739 ], [ %1756, %1754 ]
  %1762 = phi <8 x double> [ %1752, %1739 ], [ %1759, %1754 ]
  %1763 = phi <8 x double> [ %1753, %1739 ], [ %1755, %1754 ]
  %1764 = fsub <8 x double> %1711, %1724
  %1765 = fmul <8 x double> %1725, %1764
  %1766 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1765, <8 x double> %1761, <8 x double> %1707)
  %1767 = fadd <8 x double> %1763, %1766
  %1768 = fneg <8 x double> %1708
  %1769 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1768, <8 x double> %1710, <8 x double> %1767)
  %1770 = fdiv <8 x double> splat (double 1.000000e+00), %1769
  %1771 = load ptr, ptr %1690, align 16, !tbaa !78
  %1772 = getelementptr inbounds nuw <8 x double>, ptr %1771, i64 %1713
  store <8 x double> %1724, ptr %1772, align 64, !tbaa !25
  %1773 = load ptr, ptr %1703, align 8, !tbaa !66
  %1774 = getelementptr inbounds nuw <8 x double>, ptr %1773, i64 %1713
  %1775 = load <8 x double>, ptr %1774, align 64, !tbaa !25
  %1776 = fneg <8 x double> %1775
  %1777 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1708, <8 x double> %1709, <8 x double> %1776)
  %1778 = fmul <8 x double> %1770, %1777
  %1779 = load ptr, ptr %1704, align 32, !tbaa !80
  %1780 = getelementptr inbounds nuw <8 x double>, ptr %1779, i64 %1713
  store <8 x double> %1778, ptr %1780, align 64, !tbaa !25
  %1781 = fmul <8 x double> %1762, %1770
  %1782 = load ptr, ptr %1705, align 8, !tbaa !81
  %1783 = getelementptr inbounds nuw <8 x double>, ptr %1782, i64 %1713
  store <8 x double> %1781, ptr %1783, align 64, !tbaa !25
  %1784 = icmp samesign ugt i64 %1712, 1
  br i1 %1784, label %1706, label %1785, !llvm.loop !82

1785:                                             ; preds = %1760, %1674
  %1786 = load <8 x i64>, ptr %1255, align 64, !tbaa !25
  %1787 = load <8 x double>, ptr %1421, align 64, !tbaa !25
  %1788 = getelementptr inbounds nuw i8, ptr %1174, i64 7712
  %1789 = load ptr, ptr %1788, align 32, !tbaa !80
  %1790 = load <8 x double>, ptr %1789, align 64, !tbaa !25
  %1791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1787, <8 x double> %1790, <8 x double> %1648)
  %1792 = icmp eq <8 x i64> %1786, zeroinitializer
  %1793 = select <8 x i1> %1792, <8 x double> %1653, <8 x double> %1791
  %1794 = getelementptr inbounds nuw i8, ptr %1174, i64 5824
  store <8 x double> %1793, ptr %1794, align 64, !tbaa !25
  %1795 = getelementptr inbounds nuw i8, ptr %1174, i64 7720
  %1796 = load ptr, ptr %1795, align 8, !tbaa !81
  %1797 = load <8 x double>, ptr %1796, align 64, !tbaa !25
  %1798 = fsub <8 x double> splat (double 1.000000e+00), %1797
  %1799 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1787, <8 x double> %1798, <8 x double> %1650)
  %1800 = select <8 x i1> %1792, <8 x double> %1655, <8 x double> %1799
  br label %1801

1801:                                             ; preds = %1665, %1785
  %1802 = phi <8 x double> [ %1655, %1665 ], [ %1800, %1785 ]
  %1803 = getelementptr inbounds nuw i8, ptr %1174, i64 5888
  store <8 x double> %1802, ptr %1803, align 64, !tbaa !25
  %1804 = add nuw nsw i64 %1172, 1
  %1805 = load i64, ptr %149, align 64, !tbaa !16
  %1806 = icmp slt i64 %1804, %1805
  br i1 %1806, label %1171, label %1168, !llvm.loop !83

1807:                                             ; preds = %1908, %1166, %1168
  %1808 = phi <8 x double> [ %1169, %1168 ], [ %1167, %1166 ], [ %1169, %1908 ]
  %1809 = phi i64 [ %1805, %1168 ], [ %1161, %1166 ], [ %1909, %1908 ]
  %1810 = fcmp ogt <8 x double> %1808, zeroinitializer
  %1811 = bitcast <8 x i1> %1810 to i8
  %1812 = icmp eq i8 %1811, 0
  br i1 %1812, label %1995, label %1912

1813:                                             ; preds = %1168, %1908
  %1814 = phi i64 [ %1909, %1908 ], [ %1805, %1168 ]
  %1815 = phi i64 [ %1910, %1908 ], [ 0, %1168 ]
  %1816 = load ptr, ptr %150, align 8, !tbaa !27
  %1817 = getelementptr inbounds nuw %struct.Piece, ptr %1816, i64 %1815
  %1818 = getelementptr inbounds nuw i8, ptr %1817, i64 7488
  %1819 = load <8 x i64>, ptr %1818, align 64, !tbaa !25
  %1820 = getelementptr inbounds nuw i8, ptr %1817, i64 2240
  %1821 = load <8 x double>, ptr %1820, align 64, !tbaa !25
  %1822 = fcmp ogt <8 x double> %1821, zeroinitializer
  %1823 = select <8 x i1> %1822, <8 x i64> %1819, <8 x i64> zeroinitializer
  %1824 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1823)
  %1825 = icmp eq i64 %1824, 0
  br i1 %1825, label %1908, label %1826

1826:                                             ; preds = %1813
  %1827 = load <8 x double>, ptr %191, align 64, !tbaa !25
  %1828 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1827, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %1829 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1827, <8 x double> %1828, <8 x double> splat (double 0x4142F8368A3D70A4))
  %1830 = load <8 x double>, ptr %192, align 64, !tbaa !25
  %1831 = getelementptr inbounds nuw i8, ptr %1817, i64 5824
  %1832 = load <8 x double>, ptr %1831, align 64, !tbaa !25
  %1833 = getelementptr inbounds nuw i8, ptr %1817, i64 5888
  %1834 = load <8 x double>, ptr %1833, align 64, !tbaa !25
  %1835 = fdiv <8 x double> %1832, %1834
  %1836 = fcmp olt <8 x double> %1835, %1827
  %1837 = select <8 x i1> %1836, <8 x double> %1835, <8 x double> %1827
  %1838 = getelementptr inbounds nuw i8, ptr %1817, i64 5568
  %1839 = load <8 x double>, ptr %1838, align 64, !tbaa !25
  %1840 = fcmp olt <8 x double> %1839, %1837
  %1841 = select <8 x i1> %1840, <8 x double> %1839, <8 x double> %1837
  %1842 = fneg <8 x double> %1834
  %1843 = getelementptr inbounds nuw i8, ptr %1817, i64 7104
  %1844 = load <8 x double>, ptr %1843, align 64, !tbaa !25
  br label %1848

1845:                                             ; preds = %1848
  %1846 = getelementptr inbounds nuw i8, ptr %1817, i64 5952
  store <8 x double> %1899, ptr %1846, align 64, !tbaa !25
  %1847 = load i64, ptr %149, align 64, !tbaa !16
  br label %1908

1848:                                             ; preds = %1826, %1848
  %1849 = phi <8 x i64> [ %1823, %1826 ], [ %1902, %1848 ]
  %1850 = phi i32 [ 0, %1826 ], [ %1903, %1848 ]
  %1851 = phi <8 x double> [ %1841, %1826 ], [ %1899, %1848 ]
  %1852 = fadd <8 x double> %1851, splat (double 2.731500e+02)
  %1853 = fcmp ogt <8 x double> %1851, zeroinitializer
  %1854 = select <8 x i1> %1853, <8 x double> %1851, <8 x double> zeroinitializer
  %1855 = fadd <8 x double> %1854, splat (double 2.731500e+02)
  %1856 = fadd <8 x double> %1855, splat (double 0xC08451671D164BD4)
  %1857 = fdiv <8 x double> splat (double 0x3FCE88FD35E8A60E), %1856
  %1858 = fsub <8 x double> %1855, %1857
  %1859 = fadd <8 x double> %1858, splat (double 0x40923C3565924845)
  %1860 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1858, <8 x double> %1859, <8 x double> splat (double 0xC12619EA558539E6))
  %1861 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1858, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> splat (double 0x40C77A698FD9BCCA))
  %1862 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1858, <8 x double> %1861, <8 x double> splat (double 0xC148A99584203885))
  %1863 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1858, <8 x double> splat (double 0x402DD4891DBECC6B), <8 x double> splat (double 0xC0B2D7440748F0B3))
  %1864 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1858, <8 x double> %1863, <8 x double> splat (double 0x4118B9E59F2691E5))
  %1865 = fmul <8 x double> %1864, splat (double 2.000000e+00)
  %1866 = fmul <8 x double> %1860, splat (double 4.000000e+00)
  %1867 = fneg <8 x double> %1864
  %1868 = fmul <8 x double> %1866, %1867
  %1869 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1862, <8 x double> %1862, <8 x double> %1868)
  %1870 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %1869)
  %1871 = fsub <8 x double> %1870, %1862
  %1872 = fdiv <8 x double> %1865, %1871
  %1873 = fmul <8 x double> %1872, %1872
  %1874 = fmul <8 x double> %1873, splat (double 1.000000e+06)
  %1875 = fmul <8 x double> %1873, %1874
  %1876 = fmul <8 x double> %1852, splat (double 4.615260e+02)
  %1877 = fdiv <8 x double> %1875, %1876
  %1878 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %1842, <8 x double> %1851, <8 x double> %1832)
  %1879 = fsub <8 x double> %1877, %1830
  %1880 = fcmp ogt <8 x double> %1879, zeroinitializer
  %1881 = select <8 x i1> %1880, <8 x double> %1879, <8 x double> zeroinitializer
  %1882 = fmul <8 x double> %1829, %1881
  %1883 = fdiv <8 x double> %1882, %1844
  %1884 = fsub <8 x double> %1878, %1883
  %1885 = fmul <8 x double> %1829, %1877
  %1886 = fdiv <8 x double> %1829, %1876
  %1887 = fadd <8 x double> %1886, splat (double -1.000000e+00)
  %1888 = fmul <8 x double> %1887, %1885
  %1889 = fdiv <8 x double> %1888, %1852
  %1890 = fdiv <8 x double> %1889, %1844
  %1891 = fcmp ule <8 x double> %1877, %1830
  %1892 = select <8 x i1> %1891, <8 x double> zeroinitializer, <8 x double> %1890
  %1893 = fsub <8 x double> %1842, %1892
  %1894 = fdiv <8 x double> %1884, %1893
  %1895 = fsub <8 x double> %1851, %1894
  %1896 = fcmp olt <8 x double> %1895, %1837
  %1897 = select <8 x i1> %1896, <8 x double> %1895, <8 x double> %1837
  %1898 = icmp eq <8 x i64> %1849, zeroinitializer
  %1899 = select <8 x i1> %1898, <8 x double> %1851, <8 x double> %1897
  %1900 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %1894)
  %1901 = fcmp oge <8 x double> %1900, splat (double 0x3EB0C6F7A0B5ED8D)
  %1902 = select <8 x i1> %1901, <8 x i64> %1849, <8 x i64> zeroinitializer
  %1903 = add nuw nsw i32 %1850, 1
  %1904 = icmp samesign ult i32 %1850, 7
  %1905 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %1902)
  %1906 = icmp ne i64 %1905, 0
  %1907 = select i1 %1904, i1 %1906, i1 false
  br i1 %1907, label %1848, label %1845, !llvm.loop !84

1908:                                             ; preds = %1813, %1845
  %1909 = phi i64 [ %1814, %1813 ], [ %1847, %1845 ]
  %1910 = add nuw nsw i64 %1815, 1
  %1911 = icmp slt i64 %1910, %1909
  br i1 %1911, label %1813, label %1807, !llvm.loop !85

1912:                                             ; preds = %1807
  %1913 = sext <8 x i1> %1810 to <8 x i64>
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %4)
  store <8 x i64> %1913, ptr %4, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %5) #7
  store <8 x double> zeroinitializer, ptr %5, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %6) #7
  %1914 = load <8 x double>, ptr %157, align 64, !tbaa !25
  %1915 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %1916 = fadd <8 x double> %1914, %1915
  store <8 x double> %1916, ptr %6, align 64, !tbaa !25
  %1917 = load ptr, ptr %182, align 8
  %1918 = load ptr, ptr %184, align 8
  %1919 = load ptr, ptr %185, align 8
  br label %1920

1920:                                             ; preds = %1990, %1912
  %1921 = phi i64 [ 0, %1912 ], [ %1991, %1990 ]
  %1922 = getelementptr inbounds nuw i64, ptr %4, i64 %1921
  %1923 = load i64, ptr %1922, align 8, !tbaa !29
  %1924 = icmp eq i64 %1923, 0
  br i1 %1924, label %1990, label %1925

1925:                                             ; preds = %1920
  %1926 = getelementptr inbounds nuw [8 x i64], ptr %142, i64 0, i64 %1921
  %1927 = load i64, ptr %1926, align 8, !tbaa !29
  %1928 = shl nsw i64 %1927, 1
  %1929 = or disjoint i64 %1928, 1
  %1930 = getelementptr inbounds i64, ptr %1917, i64 %1929
  %1931 = load i64, ptr %1930, align 8, !tbaa !29
  %1932 = shl nuw nsw i64 %1921, 1
  %1933 = or disjoint i64 %1932, 1
  %1934 = getelementptr inbounds nuw [16 x i64], ptr %183, i64 0, i64 %1933
  %1935 = getelementptr inbounds i64, ptr %1919, i64 %1929
  %1936 = load i64, ptr %1935, align 8, !tbaa !29
  %1937 = shl nsw i64 %1936, 4
  %1938 = getelementptr inbounds i8, ptr %1918, i64 %1937
  %1939 = getelementptr inbounds nuw double, ptr %6, i64 %1921
  %1940 = load double, ptr %1939, align 8, !tbaa !42
  %1941 = load i64, ptr %1934, align 8, !tbaa !29
  %1942 = getelementptr i8, ptr %1938, i64 -16
  %1943 = icmp sgt i64 %1941, 0
  br i1 %1943, label %1944, label %1953

1944:                                             ; preds = %1925, %1950
  %1945 = phi i64 [ %1951, %1950 ], [ %1941, %1925 ]
  %1946 = shl i64 %1945, 4
  %1947 = getelementptr i8, ptr %1942, i64 %1946
  %1948 = load double, ptr %1947, align 8, !tbaa !42
  %1949 = fcmp ugt double %1940, %1948
  br i1 %1949, label %1953, label %1950

1950:                                             ; preds = %1944
  %1951 = add nsw i64 %1945, -1
  store i64 %1951, ptr %1934, align 8, !tbaa !29
  %1952 = icmp sgt i64 %1945, 1
  br i1 %1952, label %1944, label %1953, !llvm.loop !68

1953:                                             ; preds = %1950, %1944, %1925
  %1954 = phi i64 [ %1941, %1925 ], [ 0, %1950 ], [ %1945, %1944 ]
  %1955 = icmp slt i64 %1954, %1931
  br i1 %1955, label %1956, label %1965

1956:                                             ; preds = %1953, %1962
  %1957 = phi i64 [ %1963, %1962 ], [ %1954, %1953 ]
  %1958 = shl nsw i64 %1957, 4
  %1959 = getelementptr inbounds i8, ptr %1938, i64 %1958
  %1960 = load double, ptr %1959, align 8, !tbaa !42
  %1961 = fcmp ule double %1940, %1960
  br i1 %1961, label %1970, label %1962

1962:                                             ; preds = %1956
  %1963 = add i64 %1957, 1
  store i64 %1963, ptr %1934, align 8, !tbaa !29
  %1964 = icmp eq i64 %1963, %1931
  br i1 %1964, label %1965, label %1956, !llvm.loop !69

1965:                                             ; preds = %1962, %1953
  %1966 = shl i64 %1931, 4
  %1967 = getelementptr i8, ptr %1938, i64 %1966
  %1968 = getelementptr i8, ptr %1967, i64 -8
  %1969 = load double, ptr %1968, align 8, !tbaa !42
  br label %1987

1970:                                             ; preds = %1956
  %1971 = shl nsw i64 %1957, 1
  %1972 = or disjoint i64 %1971, 1
  %1973 = getelementptr inbounds double, ptr %1938, i64 %1972
  %1974 = load double, ptr %1973, align 8, !tbaa !42
  %1975 = icmp sgt i64 %1957, 0
  br i1 %1975, label %1976, label %1987

1976:                                             ; preds = %1970
  %1977 = getelementptr inbounds nuw i8, ptr %1938, i64 %1958
  %1978 = getelementptr i8, ptr %1977, i64 -8
  %1979 = load double, ptr %1978, align 8, !tbaa !42
  %1980 = getelementptr i8, ptr %1977, i64 -16
  %1981 = load double, ptr %1980, align 8, !tbaa !42
  %1982 = fsub double %1940, %1981
  %1983 = fsub double %1960, %1981
  %1984 = fdiv double %1982, %1983
  %1985 = fsub double %1974, %1979
  %1986 = tail call double @llvm.fmuladd.f64(double %1984, double %1985, double %1979)
  br label %1987

1987:                                             ; preds = %1976, %1970, %1965
  %1988 = phi double [ %1986, %1976 ], [ %1974, %1970 ], [ %1969, %1965 ]
  %1989 = getelementptr inbounds nuw double, ptr %5, i64 %1921
  store double %1988, ptr %1989, align 8, !tbaa !42
  br label %1990

1990:                                             ; preds = %1987, %1920
  %1991 = add nuw nsw i64 %1921, 1
  %1992 = icmp eq i64 %1991, 8
  br i1 %1992, label %1993, label %1920, !llvm.loop !70

1993:                                             ; preds = %1990
  %1994 = load <8 x double>, ptr %5, align 64, !tbaa !25
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %6) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %5) #7
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %4)
  br label %1995

1995:                                             ; preds = %1807, %1993
  %1996 = phi <8 x double> [ %1994, %1993 ], [ zeroinitializer, %1807 ]
  %1997 = load <8 x double>, ptr %190, align 64, !tbaa !25
  %1998 = fcmp ogt <8 x double> %1997, zeroinitializer
  %1999 = sext <8 x i1> %1998 to <8 x i64>
  %2000 = xor <8 x i64> %1999, splat (i64 -1)
  %2001 = load <8 x double>, ptr %159, align 64, !tbaa !25
  %2002 = fcmp oeq <8 x double> %2001, splat (double 1.000000e+00)
  %2003 = fcmp oeq <8 x double> %2001, splat (double 2.000000e+00)
  %2004 = or <8 x i1> %2002, %2003
  %2005 = select <8 x i1> %2004, <8 x i64> %2000, <8 x i64> zeroinitializer
  %2006 = xor <8 x i64> %2005, %1999
  %2007 = load <8 x double>, ptr %191, align 64, !tbaa !25
  %2008 = load <8 x double>, ptr %193, align 64, !tbaa !25
  %2009 = load <8 x double>, ptr %194, align 64, !tbaa !25
  %2010 = icmp eq <8 x i64> %2006, splat (i64 -1)
  %2011 = select <8 x i1> %2010, <8 x double> %2009, <8 x double> %2008
  %2012 = bitcast <8 x i1> %1998 to i8
  %2013 = icmp eq i8 %2012, 0
  br i1 %2013, label %2045, label %2014

2014:                                             ; preds = %1995
  %2015 = select <8 x i1> %1998, <8 x double> %1996, <8 x double> %2011
  %2016 = fmul <8 x double> %2015, splat (double 0x3EB0C6F7A0B5ED8D)
  %2017 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2016)
  %2018 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2017)
  %2019 = fmul <8 x double> %2018, %2018
  %2020 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2018, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2019)
  %2021 = fadd <8 x double> %2020, splat (double 0x402DD4891DBECC6B)
  %2022 = fmul <8 x double> %2018, splat (double 0x40C77A698FD9BCCA)
  %2023 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2019, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2022)
  %2024 = fadd <8 x double> %2023, splat (double 0xC0B2D7440748F0B3)
  %2025 = fmul <8 x double> %2018, splat (double 0xC148A99584203885)
  %2026 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2019, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2025)
  %2027 = fadd <8 x double> %2026, splat (double 0x4118B9E59F2691E5)
  %2028 = fmul <8 x double> %2027, splat (double 2.000000e+00)
  %2029 = fneg <8 x double> %2024
  %2030 = fmul <8 x double> %2021, splat (double 4.000000e+00)
  %2031 = fneg <8 x double> %2027
  %2032 = fmul <8 x double> %2030, %2031
  %2033 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2024, <8 x double> %2024, <8 x double> %2032)
  %2034 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2033)
  %2035 = fsub <8 x double> %2029, %2034
  %2036 = fdiv <8 x double> %2028, %2035
  %2037 = fadd <8 x double> %2036, splat (double 0x408451671D164BD4)
  %2038 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2036, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2039 = fmul <8 x double> %2038, splat (double -4.000000e+00)
  %2040 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2037, <8 x double> %2037, <8 x double> %2039)
  %2041 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2040)
  %2042 = fsub <8 x double> %2037, %2041
  %2043 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2042, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2044 = select <8 x i1> %1998, <8 x double> %2043, <8 x double> %2007
  br label %2045

2045:                                             ; preds = %2014, %1995
  %2046 = phi <8 x double> [ %2015, %2014 ], [ %2011, %1995 ]
  %2047 = phi <8 x double> [ %2044, %2014 ], [ %2007, %1995 ]
  %2048 = load <8 x double>, ptr %169, align 64, !tbaa !25
  %2049 = load <8 x double>, ptr %195, align 64, !tbaa !25
  %2050 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %2051 = load <8 x double>, ptr %196, align 64, !tbaa !25
  %2052 = fmul <8 x double> %2050, %2051
  %2053 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2048, <8 x double> %2049, <8 x double> %2052)
  %2054 = load <8 x double>, ptr %197, align 64, !tbaa !25
  %2055 = load <8 x double>, ptr %198, align 64, !tbaa !25
  %2056 = load <8 x double>, ptr %199, align 64, !tbaa !25
  %2057 = fneg <8 x double> %2053
  %2058 = fmul <8 x double> %2056, %2057
  %2059 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2054, <8 x double> %2055, <8 x double> %2058)
  %2060 = load <8 x double>, ptr %168, align 64, !tbaa !25
  %2061 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2056, <8 x double> %2060, <8 x double> %2054)
  %2062 = fdiv <8 x double> %2059, %2061
  %2063 = load <8 x double>, ptr %200, align 64, !tbaa !25
  %2064 = select <8 x i1> %2010, <8 x double> %2063, <8 x double> %2008
  store <8 x double> %2064, ptr %200, align 64, !tbaa !25
  %2065 = load <8 x double>, ptr %201, align 64, !tbaa !25
  %2066 = select <8 x i1> %2010, <8 x double> %2065, <8 x double> %2062
  store <8 x double> %2066, ptr %201, align 64, !tbaa !25
  store <8 x double> %2046, ptr %194, align 64, !tbaa !25
  %2067 = load <8 x i64>, ptr %131, align 64, !tbaa !25
  %2068 = and <8 x i64> %2067, %2005
  %2069 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2068)
  %2070 = icmp eq i64 %2069, 0
  br i1 %2070, label %2535, label %2071

2071:                                             ; preds = %2045
  %2072 = load <8 x double>, ptr %202, align 64, !tbaa !25
  %2073 = load <8 x double>, ptr %203, align 64, !tbaa !25
  %2074 = fmul <8 x double> %2050, %2073
  %2075 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2048, <8 x double> %2072, <8 x double> %2074)
  %2076 = load <8 x double>, ptr %204, align 64, !tbaa !25
  %2077 = load <8 x double>, ptr %205, align 64, !tbaa !25
  %2078 = fdiv <8 x double> %2076, %2077
  %2079 = fmul <8 x double> %2008, splat (double 3.000000e-01)
  %2080 = load <8 x double>, ptr %206, align 64, !tbaa !25
  %2081 = fadd <8 x double> %2008, %2080
  %2082 = fadd <8 x double> %2081, splat (double 2.000000e+05)
  %2083 = fmul <8 x double> %2077, splat (double 2.870530e+02)
  %2084 = fdiv <8 x double> %2008, %2083
  %2085 = fcmp ogt <8 x double> %2046, %2079
  %2086 = select <8 x i1> %2085, <8 x double> %2046, <8 x double> %2079
  %2087 = fcmp olt <8 x double> %2086, %2082
  %2088 = select <8 x i1> %2087, <8 x double> %2086, <8 x double> %2082
  %2089 = icmp eq <8 x i64> %2005, zeroinitializer
  %2090 = select <8 x i1> %2089, <8 x double> %2046, <8 x double> %2088
  %2091 = fdiv <8 x double> %2064, splat (double 2.870530e+02)
  %2092 = fmul <8 x double> %2084, splat (double 2.000000e+00)
  %2093 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2092)
  br label %2094

2094:                                             ; preds = %2321, %2071
  %2095 = phi <8 x double> [ %2047, %2071 ], [ %2129, %2321 ]
  %2096 = phi <8 x double> [ %2079, %2071 ], [ %2478, %2321 ]
  %2097 = phi <8 x double> [ %2082, %2071 ], [ %2475, %2321 ]
  %2098 = phi <8 x i64> [ %2068, %2071 ], [ %2490, %2321 ]
  %2099 = phi i32 [ 0, %2071 ], [ %2495, %2321 ]
  %2100 = phi <8 x double> [ %2090, %2071 ], [ %2492, %2321 ]
  %2101 = fmul <8 x double> %2100, splat (double 0x3EB0C6F7A0B5ED8D)
  %2102 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2101)
  %2103 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2102)
  %2104 = fmul <8 x double> %2103, %2103
  %2105 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2103, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2104)
  %2106 = fadd <8 x double> %2105, splat (double 0x402DD4891DBECC6B)
  %2107 = fmul <8 x double> %2103, splat (double 0x40C77A698FD9BCCA)
  %2108 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2104, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2107)
  %2109 = fadd <8 x double> %2108, splat (double 0xC0B2D7440748F0B3)
  %2110 = fmul <8 x double> %2103, splat (double 0xC148A99584203885)
  %2111 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2104, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2110)
  %2112 = fadd <8 x double> %2111, splat (double 0x4118B9E59F2691E5)
  %2113 = fmul <8 x double> %2112, splat (double 2.000000e+00)
  %2114 = fneg <8 x double> %2109
  %2115 = fmul <8 x double> %2106, splat (double 4.000000e+00)
  %2116 = fneg <8 x double> %2112
  %2117 = fmul <8 x double> %2115, %2116
  %2118 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2109, <8 x double> %2109, <8 x double> %2117)
  %2119 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2118)
  %2120 = fsub <8 x double> %2114, %2119
  %2121 = fdiv <8 x double> %2113, %2120
  %2122 = fadd <8 x double> %2121, splat (double 0x408451671D164BD4)
  %2123 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2121, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2124 = fmul <8 x double> %2123, splat (double -4.000000e+00)
  %2125 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2122, <8 x double> %2122, <8 x double> %2124)
  %2126 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2125)
  %2127 = fsub <8 x double> %2122, %2126
  %2128 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2127, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2129 = select <8 x i1> %2089, <8 x double> %2095, <8 x double> %2128
  %2130 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2129, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2131 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2129, <8 x double> %2130, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2132 = load i64, ptr %149, align 64, !tbaa !16, !noalias !86
  %2133 = icmp sgt i64 %2132, 0
  br i1 %2133, label %2134, label %2321

2134:                                             ; preds = %2094
  %2135 = fdiv <8 x double> splat (double 1.000000e+00), %2131
  %2136 = fadd <8 x double> %2129, splat (double 1.000000e-09)
  br label %2137

2137:                                             ; preds = %2134, %2247
  %2138 = phi i64 [ 0, %2134 ], [ %2318, %2247 ]
  %2139 = phi <8 x double> [ zeroinitializer, %2134 ], [ %2317, %2247 ]
  %2140 = phi <8 x double> [ zeroinitializer, %2134 ], [ %2316, %2247 ]
  %2141 = load ptr, ptr %150, align 8, !tbaa !27, !noalias !86
  %2142 = getelementptr inbounds nuw %struct.Piece, ptr %2141, i64 %2138
  %2143 = getelementptr inbounds nuw i8, ptr %2142, i64 5824
  %2144 = load <8 x double>, ptr %2143, align 64, !tbaa !25, !noalias !86
  %2145 = getelementptr inbounds nuw i8, ptr %2142, i64 5888
  %2146 = load <8 x double>, ptr %2145, align 64, !tbaa !25, !noalias !86
  %2147 = getelementptr inbounds nuw i8, ptr %2142, i64 7296
  %2148 = load <8 x double>, ptr %2147, align 64, !tbaa !25, !noalias !86
  %2149 = fcmp ule <8 x double> %2148, splat (double 1.000000e+00)
  %2150 = fmul <8 x double> %2129, %2146
  %2151 = fcmp ogt <8 x double> %2144, %2150
  %2152 = and <8 x i1> %2149, %2151
  %2153 = fneg <8 x double> %2146
  %2154 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2153, <8 x double> %2129, <8 x double> %2144)
  %2155 = fmul <8 x double> %2135, %2154
  %2156 = select <8 x i1> %2152, <8 x double> %2155, <8 x double> zeroinitializer
  %2157 = fmul <8 x double> %2135, %2153
  %2158 = fdiv <8 x double> %2144, %2146
  %2159 = select <8 x i1> %2152, <8 x double> %2129, <8 x double> %2158
  %2160 = getelementptr inbounds nuw i8, ptr %2142, i64 7488
  %2161 = load <8 x i64>, ptr %2160, align 64, !tbaa !25, !noalias !86
  %2162 = getelementptr inbounds nuw i8, ptr %2142, i64 2240
  %2163 = load <8 x double>, ptr %2162, align 64, !tbaa !25, !noalias !86
  %2164 = fcmp ule <8 x double> %2163, zeroinitializer
  %2165 = xor <8 x i1> %2149, splat (i1 true)
  %2166 = select <8 x i1> %2165, <8 x i1> splat (i1 true), <8 x i1> %2164
  %2167 = getelementptr inbounds nuw i8, ptr %2142, i64 5952
  %2168 = load <8 x double>, ptr %2167, align 64, !tbaa !25, !noalias !86
  %2169 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2153, <8 x double> %2168, <8 x double> %2144)
  %2170 = fcmp ogt <8 x double> %2169, zeroinitializer
  %2171 = select <8 x i1> %2170, <8 x double> %2169, <8 x double> zeroinitializer
  %2172 = fmul <8 x double> %2135, %2171
  %2173 = icmp eq <8 x i64> %2161, zeroinitializer
  %2174 = select <8 x i1> %2166, <8 x i1> splat (i1 true), <8 x i1> %2173
  %2175 = select <8 x i1> %2174, <8 x double> %2156, <8 x double> %2172
  %2176 = select <8 x i1> %2174, <8 x double> %2159, <8 x double> %2168
  %2177 = select <8 x i1> %2174, <8 x i1> %2152, <8 x i1> zeroinitializer
  %2178 = select <8 x i1> %2177, <8 x double> %2157, <8 x double> zeroinitializer
  %2179 = load i64, ptr %140, align 8, !tbaa !20, !noalias !89
  %2180 = sitofp i64 %2179 to double
  %2181 = insertelement <8 x double> poison, double %2180, i64 0
  %2182 = shufflevector <8 x double> %2181, <8 x double> poison, <8 x i32> zeroinitializer
  %2183 = icmp sgt i64 %2179, 0
  br i1 %2183, label %2184, label %2247

2184:                                             ; preds = %2137
  %2185 = getelementptr inbounds nuw i8, ptr %2142, i64 7608
  %2186 = load ptr, ptr %2185, align 8, !tbaa !75, !noalias !89
  %2187 = getelementptr inbounds nuw i8, ptr %2142, i64 7616
  %2188 = load ptr, ptr %2187, align 64, !tbaa !76, !noalias !89
  %2189 = getelementptr inbounds nuw i8, ptr %2142, i64 7552
  %2190 = load i64, ptr %2189, align 64, !tbaa !30, !noalias !89
  %2191 = getelementptr inbounds nuw i8, ptr %2142, i64 7632
  %2192 = getelementptr inbounds nuw i8, ptr %2142, i64 7624
  %2193 = getelementptr inbounds nuw i8, ptr %2142, i64 7640
  br label %2194

2194:                                             ; preds = %2184, %2229
  %2195 = phi <8 x i64> [ splat (i64 -1), %2184 ], [ %2209, %2229 ]
  %2196 = phi i64 [ %2179, %2184 ], [ %2200, %2229 ]
  %2197 = phi <8 x double> [ %2182, %2184 ], [ %2245, %2229 ]
  %2198 = phi <8 x double> [ zeroinitializer, %2184 ], [ %2241, %2229 ]
  %2199 = phi <8 x double> [ zeroinitializer, %2184 ], [ %2239, %2229 ]
  %2200 = add nsw i64 %2196, -1
  %2201 = getelementptr inbounds nuw <8 x double>, ptr %2186, i64 %2200
  %2202 = load <8 x double>, ptr %2201, align 64, !tbaa !25, !noalias !89
  %2203 = getelementptr inbounds nuw <8 x double>, ptr %2188, i64 %2200
  %2204 = load <8 x double>, ptr %2203, align 64, !tbaa !25, !noalias !89
  %2205 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2204, <8 x double> %2129, <8 x double> %2202)
  %2206 = fcmp ogt <8 x double> %2205, %2136
  %2207 = select <8 x i1> %2206, <8 x i64> %2195, <8 x i64> zeroinitializer
  %2208 = icmp sgt i64 %2196, %2190
  %2209 = select i1 %2208, <8 x i64> %2207, <8 x i64> zeroinitializer
  %2210 = icmp slt i64 %2196, %2179
  br i1 %2210, label %2211, label %2224

2211:                                             ; preds = %2194
  %2212 = load ptr, ptr %2191, align 16, !tbaa !73, !noalias !89
  %2213 = getelementptr inbounds nuw <8 x double>, ptr %2212, i64 %2196
  %2214 = load <8 x double>, ptr %2213, align 64, !tbaa !25, !noalias !89
  %2215 = fsub <8 x double> %2205, %2129
  %2216 = fmul <8 x double> %2215, %2214
  %2217 = icmp eq <8 x i64> %2209, %2195
  %2218 = select <8 x i1> %2217, <8 x double> zeroinitializer, <8 x double> %2216
  %2219 = fadd <8 x double> %2199, %2218
  %2220 = fadd <8 x double> %2204, splat (double -1.000000e+00)
  %2221 = fmul <8 x double> %2220, %2214
  %2222 = select <8 x i1> %2217, <8 x double> zeroinitializer, <8 x double> %2221
  %2223 = fadd <8 x double> %2198, %2222
  br label %2224

2224:                                             ; preds = %2211, %2194
  %2225 = phi <8 x double> [ %2219, %2211 ], [ %2199, %2194 ]
  %2226 = phi <8 x double> [ %2223, %2211 ], [ %2198, %2194 ]
  %2227 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2209)
  %2228 = icmp eq i64 %2227, 0
  br i1 %2228, label %2247, label %2229

2229:                                             ; preds = %2224
  %2230 = load ptr, ptr %2192, align 8, !tbaa !72, !noalias !89
  %2231 = getelementptr inbounds nuw <8 x double>, ptr %2230, i64 %2200
  %2232 = load <8 x double>, ptr %2231, align 64, !tbaa !25, !noalias !89
  %2233 = load ptr, ptr %2193, align 8, !tbaa !74, !noalias !89
  %2234 = getelementptr inbounds nuw <8 x double>, ptr %2233, i64 %2200
  %2235 = load <8 x double>, ptr %2234, align 64, !tbaa !25, !noalias !89
  %2236 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2235, <8 x double> %2129, <8 x double> %2232)
  %2237 = icmp eq <8 x i64> %2209, zeroinitializer
  %2238 = select <8 x i1> %2237, <8 x double> zeroinitializer, <8 x double> %2236
  %2239 = fadd <8 x double> %2225, %2238
  %2240 = select <8 x i1> %2237, <8 x double> zeroinitializer, <8 x double> %2235
  %2241 = fadd <8 x double> %2226, %2240
  %2242 = uitofp nneg i64 %2200 to double
  %2243 = insertelement <8 x double> poison, double %2242, i64 0
  %2244 = shufflevector <8 x double> %2243, <8 x double> poison, <8 x i32> zeroinitializer
  %2245 = select <8 x i1> %2237, <8 x double> %2197, <8 x double> %2244
  %2246 = icmp samesign ugt i64 %2196, 1
  br i1 %2246, label %2194, label %2247, !llvm.loop !92

2247:                                             ; preds = %2229, %2224, %2137
  %2248 = phi <8 x double> [ %2182, %2137 ], [ %2197, %2224 ], [ %2245, %2229 ]
  %2249 = phi <8 x double> [ zeroinitializer, %2137 ], [ %2225, %2224 ], [ %2239, %2229 ]
  %2250 = phi <8 x double> [ zeroinitializer, %2137 ], [ %2226, %2224 ], [ %2241, %2229 ]
  %2251 = getelementptr inbounds nuw i8, ptr %2142, i64 6080
  %2252 = load <8 x double>, ptr %2251, align 64, !tbaa !25, !noalias !86
  %2253 = getelementptr inbounds nuw i8, ptr %2142, i64 5504
  %2254 = load <8 x double>, ptr %2253, align 64, !tbaa !25, !noalias !86
  %2255 = getelementptr inbounds nuw i8, ptr %2142, i64 7040
  %2256 = load <8 x double>, ptr %2255, align 64, !tbaa !25, !noalias !86
  %2257 = fneg <8 x double> %2256
  %2258 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2252, <8 x double> %2254, <8 x double> %2257)
  %2259 = getelementptr inbounds nuw i8, ptr %2142, i64 6976
  %2260 = load <8 x double>, ptr %2259, align 64, !tbaa !25, !noalias !86
  %2261 = fadd <8 x double> %2252, %2260
  %2262 = getelementptr inbounds nuw i8, ptr %2142, i64 7360
  %2263 = load <8 x i64>, ptr %2262, align 64, !tbaa !25, !noalias !86
  %2264 = getelementptr inbounds nuw i8, ptr %2142, i64 7712
  %2265 = load ptr, ptr %2264, align 32, !tbaa !80, !noalias !86
  %2266 = load <8 x double>, ptr %2265, align 64, !tbaa !25, !noalias !86
  %2267 = fmul <8 x double> %2252, %2266
  %2268 = icmp eq <8 x i64> %2263, zeroinitializer
  %2269 = select <8 x i1> %2268, <8 x double> %2258, <8 x double> %2267
  %2270 = getelementptr inbounds nuw i8, ptr %2142, i64 7720
  %2271 = load ptr, ptr %2270, align 8, !tbaa !81, !noalias !86
  %2272 = load <8 x double>, ptr %2271, align 64, !tbaa !25, !noalias !86
  %2273 = fsub <8 x double> splat (double 1.000000e+00), %2272
  %2274 = fmul <8 x double> %2252, %2273
  %2275 = select <8 x i1> %2268, <8 x double> %2261, <8 x double> %2274
  %2276 = fneg <8 x double> %2275
  %2277 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2276, <8 x double> %2129, <8 x double> %2269)
  %2278 = fcmp olt <8 x double> %2248, %2182
  %2279 = and <8 x i1> %2149, %2278
  %2280 = fcmp ogt <8 x double> %2249, zeroinitializer
  %2281 = fcmp oge <8 x double> %2277, zeroinitializer
  %2282 = and <8 x i1> %2280, %2281
  %2283 = and <8 x i1> %2279, %2282
  %2284 = sext <8 x i1> %2283 to <8 x i64>
  %2285 = xor <8 x i64> %2284, splat (i64 -1)
  %2286 = fadd <8 x double> %2249, %2277
  %2287 = fcmp ogt <8 x double> %2286, zeroinitializer
  %2288 = select <8 x i1> %2287, <8 x i1> %2279, <8 x i1> zeroinitializer
  %2289 = select <8 x i1> %2288, <8 x i64> %2285, <8 x i64> zeroinitializer
  %2290 = or <8 x i64> %2289, %2284
  %2291 = fmul <8 x double> %2135, %2277
  %2292 = select <8 x i1> %2283, <8 x double> %2291, <8 x double> zeroinitializer
  %2293 = icmp eq <8 x i64> %2290, zeroinitializer
  %2294 = select <8 x i1> %2293, <8 x double> %2175, <8 x double> %2292
  %2295 = select <8 x i1> %2293, <8 x double> %2176, <8 x double> %2129
  %2296 = fsub <8 x double> %2250, %2275
  %2297 = fmul <8 x double> %2135, %2296
  %2298 = select <8 x i1> %2293, <8 x double> %2178, <8 x double> %2297
  %2299 = getelementptr inbounds nuw i8, ptr %2142, i64 5632
  store <8 x double> %2294, ptr %2299, align 64, !tbaa !25, !noalias !86
  %2300 = getelementptr inbounds nuw i8, ptr %2142, i64 5568
  store <8 x double> %2295, ptr %2300, align 64, !tbaa !25, !noalias !86
  %2301 = fmul <8 x double> %2135, %2249
  %2302 = fmul <8 x double> %2135, %2286
  %2303 = icmp eq <8 x i64> %2289, zeroinitializer
  %2304 = select <8 x i1> %2303, <8 x double> zeroinitializer, <8 x double> %2302
  %2305 = select <8 x i1> %2283, <8 x double> %2301, <8 x double> %2304
  %2306 = getelementptr inbounds nuw i8, ptr %2142, i64 5696
  store <8 x double> %2305, ptr %2306, align 64, !tbaa !25, !noalias !86
  %2307 = load i64, ptr %140, align 8, !tbaa !20, !noalias !86
  %2308 = sitofp i64 %2307 to double
  %2309 = insertelement <8 x double> poison, double %2308, i64 0
  %2310 = shufflevector <8 x double> %2309, <8 x double> poison, <8 x i32> zeroinitializer
  %2311 = select <8 x i1> %2293, <8 x double> %2310, <8 x double> %2248
  %2312 = getelementptr inbounds nuw i8, ptr %2142, i64 5760
  store <8 x double> %2311, ptr %2312, align 64, !tbaa !25, !noalias !86
  %2313 = getelementptr inbounds nuw i8, ptr %2142, i64 128
  %2314 = load <8 x double>, ptr %2313, align 64, !tbaa !25, !noalias !86
  %2315 = fadd <8 x double> %2294, %2305
  %2316 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2314, <8 x double> %2315, <8 x double> %2140)
  %2317 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2314, <8 x double> %2298, <8 x double> %2139)
  %2318 = add nuw nsw i64 %2138, 1
  %2319 = load i64, ptr %149, align 64, !tbaa !16, !noalias !86
  %2320 = icmp slt i64 %2318, %2319
  br i1 %2320, label %2137, label %2321, !llvm.loop !93

2321:                                             ; preds = %2247, %2094
  %2322 = phi <8 x double> [ zeroinitializer, %2094 ], [ %2316, %2247 ]
  %2323 = phi <8 x double> [ zeroinitializer, %2094 ], [ %2317, %2247 ]
  %2324 = fsub <8 x double> %2100, %2064
  %2325 = fcmp ogt <8 x double> %2324, zeroinitializer
  %2326 = select <8 x i1> %2325, <8 x double> %2324, <8 x double> zeroinitializer
  %2327 = fadd <8 x double> %2129, splat (double 2.731500e+02)
  %2328 = fdiv <8 x double> %2326, splat (double 4.615260e+02)
  %2329 = fadd <8 x double> %2091, %2328
  %2330 = load <8 x double>, ptr %205, align 64, !tbaa !25
  %2331 = fdiv <8 x double> %2329, %2330
  %2332 = fmul <8 x double> %2330, %2331
  %2333 = fdiv <8 x double> %2100, %2332
  %2334 = load <8 x double>, ptr %193, align 64, !tbaa !25, !noalias !94
  %2335 = fsub <8 x double> %2100, %2334
  %2336 = load <8 x double>, ptr %206, align 64, !tbaa !25, !noalias !94
  %2337 = fsub <8 x double> %2335, %2336
  %2338 = load <8 x double>, ptr %207, align 64, !tbaa !25, !noalias !94
  %2339 = load <8 x double>, ptr %159, align 64, !tbaa !25, !noalias !94
  %2340 = fcmp une <8 x double> %2339, splat (double 2.000000e+00)
  %2341 = load <8 x double>, ptr %208, align 64, !tbaa !25, !noalias !94
  %2342 = select <8 x i1> %2340, <8 x double> zeroinitializer, <8 x double> %2341
  %2343 = fadd <8 x double> %2338, %2342
  %2344 = fcmp ule <8 x double> %2335, zeroinitializer
  %2345 = fcmp ule <8 x double> %2343, zeroinitializer
  %2346 = or <8 x i1> %2344, %2345
  %2347 = fmul <8 x double> %2331, splat (double 2.000000e+00)
  %2348 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2347)
  %2349 = fmul <8 x double> %2348, %2343
  %2350 = fadd <8 x double> %2335, splat (double 2.000000e+02)
  %2351 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2350)
  %2352 = select <8 x i1> %2344, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2351
  %2353 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2335, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2354 = fmul <8 x double> %2353, %2349
  %2355 = fmul <8 x double> %2352, %2352
  %2356 = fmul <8 x double> %2352, %2355
  %2357 = fdiv <8 x double> %2354, %2356
  %2358 = fmul <8 x double> %2335, %2349
  %2359 = fdiv <8 x double> %2358, %2352
  %2360 = select <8 x i1> %2346, <8 x double> zeroinitializer, <8 x double> %2359
  %2361 = select <8 x i1> %2346, <8 x double> zeroinitializer, <8 x double> %2357
  %2362 = fcmp ule <8 x double> %2337, zeroinitializer
  %2363 = load <8 x double>, ptr %209, align 64, !tbaa !25, !noalias !94
  %2364 = fmul <8 x double> %2337, %2363
  %2365 = select <8 x i1> %2362, <8 x double> zeroinitializer, <8 x double> %2364
  %2366 = fadd <8 x double> %2365, %2360
  %2367 = select <8 x i1> %2362, <8 x double> zeroinitializer, <8 x double> %2363
  %2368 = fadd <8 x double> %2367, %2361
  %2369 = load <8 x double>, ptr %210, align 64, !tbaa !25
  %2370 = fsub <8 x double> %2334, %2100
  %2371 = fcmp ule <8 x double> %2370, zeroinitializer
  %2372 = fcmp ule <8 x double> %2369, zeroinitializer
  %2373 = or <8 x i1> %2371, %2372
  %2374 = fmul <8 x double> %2093, %2369
  %2375 = fadd <8 x double> %2370, splat (double 2.000000e+02)
  %2376 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2375)
  %2377 = select <8 x i1> %2371, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2376
  %2378 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2370, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double 2.000000e+02))
  %2379 = fmul <8 x double> %2378, %2374
  %2380 = fmul <8 x double> %2377, %2377
  %2381 = fmul <8 x double> %2377, %2380
  %2382 = fdiv <8 x double> %2379, %2381
  %2383 = fmul <8 x double> %2370, %2374
  %2384 = fdiv <8 x double> %2383, %2377
  %2385 = load <8 x double>, ptr %169, align 64, !tbaa !25, !noalias !97
  %2386 = load <8 x double>, ptr %195, align 64, !tbaa !25, !noalias !97
  %2387 = load <8 x double>, ptr %170, align 64, !tbaa !25, !noalias !97
  %2388 = load <8 x double>, ptr %196, align 64, !tbaa !25, !noalias !97
  %2389 = fmul <8 x double> %2387, %2388
  %2390 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2385, <8 x double> %2386, <8 x double> %2389)
  %2391 = load <8 x double>, ptr %199, align 64, !tbaa !25, !noalias !97
  %2392 = load <8 x double>, ptr %168, align 64, !tbaa !25, !noalias !97
  %2393 = load <8 x double>, ptr %197, align 64, !tbaa !25, !noalias !97
  %2394 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2391, <8 x double> %2392, <8 x double> %2393)
  %2395 = load <8 x double>, ptr %198, align 64, !tbaa !25, !noalias !97
  %2396 = fneg <8 x double> %2390
  %2397 = fmul <8 x double> %2391, %2396
  %2398 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2393, <8 x double> %2395, <8 x double> %2397)
  %2399 = fdiv <8 x double> %2398, %2394
  %2400 = fcmp ogt <8 x double> %2326, splat (double 2.000000e+03)
  %2401 = select <8 x i1> %2400, <8 x double> %2326, <8 x double> splat (double 2.000000e+03)
  %2402 = fmul <8 x double> %2401, splat (double 0x3EB0C6F7A0B5ED8D)
  %2403 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2402)
  %2404 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2403)
  %2405 = fmul <8 x double> %2404, %2404
  %2406 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2404, <8 x double> splat (double 0xC03112E7A2109AD5), <8 x double> %2405)
  %2407 = fadd <8 x double> %2406, splat (double 0x402DD4891DBECC6B)
  %2408 = fmul <8 x double> %2404, splat (double 0x40C77A698FD9BCCA)
  %2409 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2405, <8 x double> splat (double 0x40923C3565924845), <8 x double> %2408)
  %2410 = fadd <8 x double> %2409, splat (double 0xC0B2D7440748F0B3)
  %2411 = fmul <8 x double> %2404, splat (double 0xC148A99584203885)
  %2412 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2405, <8 x double> splat (double 0xC12619EA558539E6), <8 x double> %2411)
  %2413 = fadd <8 x double> %2412, splat (double 0x4118B9E59F2691E5)
  %2414 = fmul <8 x double> %2413, splat (double 2.000000e+00)
  %2415 = fneg <8 x double> %2410
  %2416 = fmul <8 x double> %2407, splat (double 4.000000e+00)
  %2417 = fneg <8 x double> %2413
  %2418 = fmul <8 x double> %2416, %2417
  %2419 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2410, <8 x double> %2410, <8 x double> %2418)
  %2420 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2419)
  %2421 = fsub <8 x double> %2415, %2420
  %2422 = fdiv <8 x double> %2414, %2421
  %2423 = fadd <8 x double> %2422, splat (double 0x408451671D164BD4)
  %2424 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2422, <8 x double> splat (double 0x408451671D164BD4), <8 x double> splat (double 0xBFCE88FD35E8A60E))
  %2425 = fmul <8 x double> %2424, splat (double -4.000000e+00)
  %2426 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2423, <8 x double> %2423, <8 x double> %2425)
  %2427 = tail call noundef <8 x double> @llvm.sqrt.v8f64(<8 x double> %2426)
  %2428 = fsub <8 x double> %2423, %2427
  %2429 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2428, <8 x double> splat (double 5.000000e-01), <8 x double> splat (double -2.731500e+02))
  %2430 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2431 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2429, <8 x double> %2430, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2432 = fadd <8 x double> %2429, splat (double 2.731500e+02)
  %2433 = fcmp ule <8 x double> %2429, %2399
  %2434 = load <8 x double>, ptr %211, align 64, !tbaa !25, !noalias !97
  %2435 = fmul <8 x double> %2394, %2434
  %2436 = fadd <8 x double> %2394, %2434
  %2437 = fdiv <8 x double> %2435, %2436
  %2438 = fdiv <8 x double> %2437, %2431
  %2439 = fmul <8 x double> %2432, splat (double 4.615260e+02)
  %2440 = fmul <8 x double> %2401, %2431
  %2441 = fmul <8 x double> %2429, %2434
  %2442 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2399, <8 x double> %2394, <8 x double> %2441)
  %2443 = fdiv <8 x double> %2442, %2436
  %2444 = select <8 x i1> %2433, <8 x double> %2399, <8 x double> %2443
  store <8 x double> %2444, ptr %201, align 64, !tbaa !25, !noalias !97
  %2445 = fsub <8 x double> %2429, %2399
  %2446 = fmul <8 x double> %2445, %2438
  %2447 = select <8 x i1> %2433, <8 x double> zeroinitializer, <8 x double> %2446
  %2448 = fmul <8 x double> %2327, splat (double 4.615260e+02)
  %2449 = fmul <8 x double> %2327, %2448
  %2450 = fmul <8 x double> %2100, %2131
  %2451 = fdiv <8 x double> %2449, %2450
  %2452 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2392, <8 x double> %2100, <8 x double> %2075)
  %2453 = fsub <8 x double> %2322, %2447
  %2454 = fmul <8 x double> %2453, splat (double -4.615260e+02)
  %2455 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2078, <8 x double> %2452, <8 x double> %2454)
  %2456 = fmul <8 x double> %2384, splat (double -2.870530e+02)
  %2457 = select <8 x i1> %2373, <8 x double> splat (double -0.000000e+00), <8 x double> %2456
  %2458 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2333, <8 x double> %2366, <8 x double> %2457)
  %2459 = fadd <8 x double> %2458, %2455
  %2460 = fneg <8 x double> %2432
  %2461 = fmul <8 x double> %2439, %2460
  %2462 = fdiv <8 x double> %2461, %2440
  %2463 = fmul <8 x double> %2462, %2438
  %2464 = select <8 x i1> %2433, <8 x double> splat (double -0.000000e+00), <8 x double> %2463
  %2465 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2323, <8 x double> %2451, <8 x double> %2464)
  %2466 = fmul <8 x double> %2465, splat (double -4.615260e+02)
  %2467 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2078, <8 x double> %2392, <8 x double> %2466)
  %2468 = fmul <8 x double> %2382, splat (double 2.870530e+02)
  %2469 = select <8 x i1> %2373, <8 x double> zeroinitializer, <8 x double> %2468
  %2470 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2333, <8 x double> %2368, <8 x double> %2469)
  %2471 = fadd <8 x double> %2470, %2467
  %2472 = fcmp ule <8 x double> %2459, zeroinitializer
  %2473 = fcmp olt <8 x double> %2097, %2100
  %2474 = select <8 x i1> %2472, <8 x i1> splat (i1 true), <8 x i1> %2473
  %2475 = select <8 x i1> %2474, <8 x double> %2097, <8 x double> %2100
  %2476 = fcmp ogt <8 x double> %2096, %2100
  %2477 = select <8 x i1> %2476, <8 x double> %2096, <8 x double> %2100
  %2478 = select <8 x i1> %2472, <8 x double> %2477, <8 x double> %2096
  %2479 = fdiv <8 x double> %2459, %2471
  %2480 = fsub <8 x double> %2100, %2479
  %2481 = fcmp uge <8 x double> %2478, %2480
  %2482 = fcmp uge <8 x double> %2480, %2475
  %2483 = or <8 x i1> %2481, %2482
  %2484 = fadd <8 x double> %2478, %2475
  %2485 = fmul <8 x double> %2484, splat (double 5.000000e-01)
  %2486 = select <8 x i1> %2483, <8 x double> %2485, <8 x double> %2480
  %2487 = fsub <8 x double> %2486, %2100
  %2488 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2487)
  %2489 = fcmp oge <8 x double> %2488, splat (double 2.000000e-01)
  %2490 = select <8 x i1> %2489, <8 x i64> %2098, <8 x i64> zeroinitializer
  %2491 = icmp eq <8 x i64> %2490, zeroinitializer
  %2492 = select <8 x i1> %2491, <8 x double> %2100, <8 x double> %2486
  %2493 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2490)
  %2494 = icmp ne i64 %2493, 0
  %2495 = add nuw nsw i32 %2099, 1
  %2496 = icmp samesign ult i32 %2099, 59
  %2497 = select i1 %2494, i1 %2496, i1 false
  br i1 %2497, label %2094, label %2498, !llvm.loop !100

2498:                                             ; preds = %2321
  %2499 = load <8 x double>, ptr %169, align 64, !tbaa !25
  %2500 = load <8 x double>, ptr %212, align 64, !tbaa !25
  %2501 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %2502 = load <8 x double>, ptr %213, align 64, !tbaa !25
  %2503 = fmul <8 x double> %2501, %2502
  %2504 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2499, <8 x double> %2500, <8 x double> %2503)
  %2505 = load <8 x double>, ptr %210, align 64, !tbaa !25
  %2506 = load <8 x double>, ptr %193, align 64, !tbaa !25
  %2507 = fsub <8 x double> %2506, %2492
  %2508 = fcmp ule <8 x double> %2507, zeroinitializer
  %2509 = fcmp ule <8 x double> %2505, zeroinitializer
  %2510 = or <8 x i1> %2509, %2508
  %2511 = fmul <8 x double> %2093, %2505
  %2512 = fadd <8 x double> %2507, splat (double 2.000000e+02)
  %2513 = tail call <8 x double> @llvm.sqrt.v8f64(<8 x double> %2512)
  %2514 = select <8 x i1> %2508, <8 x double> splat (double 0x402C48C6001F0AC0), <8 x double> %2513
  %2515 = fmul <8 x double> %2511, %2507
  %2516 = fdiv <8 x double> %2515, %2514
  %2517 = fmul <8 x double> %2516, splat (double 2.870530e+02)
  %2518 = select <8 x i1> %2510, <8 x double> zeroinitializer, <8 x double> %2517
  %2519 = fdiv <8 x double> %2518, %2078
  %2520 = fsub <8 x double> %2519, %2504
  %2521 = load <8 x double>, ptr %168, align 64, !tbaa !25
  %2522 = load <8 x double>, ptr %204, align 64, !tbaa !25
  %2523 = fmul <8 x double> %2331, %2522
  %2524 = fdiv <8 x double> %2366, %2523
  %2525 = fadd <8 x double> %2521, %2524
  %2526 = fdiv <8 x double> %2520, %2525
  %2527 = fcmp ogt <8 x double> %2526, zeroinitializer
  %2528 = select <8 x i1> %2527, <8 x double> %2526, <8 x double> zeroinitializer
  %2529 = fcmp olt <8 x double> %2528, %2492
  %2530 = select <8 x i1> %2529, <8 x double> %2528, <8 x double> %2492
  %2531 = load <8 x double>, ptr %200, align 64, !tbaa !25
  %2532 = select <8 x i1> %2089, <8 x double> %2531, <8 x double> %2530
  store <8 x double> %2532, ptr %200, align 64, !tbaa !25
  %2533 = select <8 x i1> %2089, <8 x double> %2066, <8 x double> %2444
  store <8 x double> %2533, ptr %201, align 64, !tbaa !25
  store <8 x double> %2492, ptr %194, align 64, !tbaa !25
  store <8 x double> %2129, ptr %214, align 64, !tbaa !25
  %2534 = load i64, ptr %149, align 64, !tbaa !16
  br label %2704

2535:                                             ; preds = %2045
  store <8 x double> %2047, ptr %214, align 64, !tbaa !25
  %2536 = icmp sgt i64 %1809, 0
  br i1 %2536, label %2537, label %2707

2537:                                             ; preds = %2535
  %2538 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2047, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2539 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2047, <8 x double> %2538, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2540 = fdiv <8 x double> splat (double 1.000000e+00), %2539
  %2541 = fadd <8 x double> %2047, splat (double 1.000000e-09)
  br label %2542

2542:                                             ; preds = %2537, %2639
  %2543 = phi i64 [ 0, %2537 ], [ %2701, %2639 ]
  %2544 = load ptr, ptr %150, align 8, !tbaa !27, !noalias !101
  %2545 = getelementptr inbounds nuw %struct.Piece, ptr %2544, i64 %2543
  %2546 = getelementptr inbounds nuw i8, ptr %2545, i64 5824
  %2547 = load <8 x double>, ptr %2546, align 64, !tbaa !25, !noalias !101
  %2548 = getelementptr inbounds nuw i8, ptr %2545, i64 5888
  %2549 = load <8 x double>, ptr %2548, align 64, !tbaa !25, !noalias !101
  %2550 = getelementptr inbounds nuw i8, ptr %2545, i64 7296
  %2551 = load <8 x double>, ptr %2550, align 64, !tbaa !25, !noalias !101
  %2552 = fcmp ule <8 x double> %2551, splat (double 1.000000e+00)
  %2553 = fmul <8 x double> %2047, %2549
  %2554 = fcmp ogt <8 x double> %2547, %2553
  %2555 = and <8 x i1> %2552, %2554
  %2556 = fneg <8 x double> %2549
  %2557 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2556, <8 x double> %2047, <8 x double> %2547)
  %2558 = fmul <8 x double> %2540, %2557
  %2559 = select <8 x i1> %2555, <8 x double> %2558, <8 x double> zeroinitializer
  %2560 = fdiv <8 x double> %2547, %2549
  %2561 = select <8 x i1> %2555, <8 x double> %2047, <8 x double> %2560
  %2562 = getelementptr inbounds nuw i8, ptr %2545, i64 7488
  %2563 = load <8 x i64>, ptr %2562, align 64, !tbaa !25, !noalias !101
  %2564 = getelementptr inbounds nuw i8, ptr %2545, i64 2240
  %2565 = load <8 x double>, ptr %2564, align 64, !tbaa !25, !noalias !101
  %2566 = fcmp ule <8 x double> %2565, zeroinitializer
  %2567 = xor <8 x i1> %2552, splat (i1 true)
  %2568 = select <8 x i1> %2567, <8 x i1> splat (i1 true), <8 x i1> %2566
  %2569 = getelementptr inbounds nuw i8, ptr %2545, i64 5952
  %2570 = load <8 x double>, ptr %2569, align 64, !tbaa !25, !noalias !101
  %2571 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2556, <8 x double> %2570, <8 x double> %2547)
  %2572 = fcmp ogt <8 x double> %2571, zeroinitializer
  %2573 = select <8 x i1> %2572, <8 x double> %2571, <8 x double> zeroinitializer
  %2574 = fmul <8 x double> %2540, %2573
  %2575 = icmp eq <8 x i64> %2563, zeroinitializer
  %2576 = select <8 x i1> %2568, <8 x i1> splat (i1 true), <8 x i1> %2575
  %2577 = select <8 x i1> %2576, <8 x double> %2559, <8 x double> %2574
  %2578 = select <8 x i1> %2576, <8 x double> %2561, <8 x double> %2570
  %2579 = load i64, ptr %140, align 8, !tbaa !20, !noalias !104
  %2580 = sitofp i64 %2579 to double
  %2581 = insertelement <8 x double> poison, double %2580, i64 0
  %2582 = shufflevector <8 x double> %2581, <8 x double> poison, <8 x i32> zeroinitializer
  %2583 = icmp sgt i64 %2579, 0
  br i1 %2583, label %2584, label %2639

2584:                                             ; preds = %2542
  %2585 = getelementptr inbounds nuw i8, ptr %2545, i64 7608
  %2586 = load ptr, ptr %2585, align 8, !tbaa !75, !noalias !104
  %2587 = getelementptr inbounds nuw i8, ptr %2545, i64 7616
  %2588 = load ptr, ptr %2587, align 64, !tbaa !76, !noalias !104
  %2589 = getelementptr inbounds nuw i8, ptr %2545, i64 7552
  %2590 = load i64, ptr %2589, align 64, !tbaa !30, !noalias !104
  %2591 = getelementptr inbounds nuw i8, ptr %2545, i64 7632
  %2592 = getelementptr inbounds nuw i8, ptr %2545, i64 7624
  %2593 = getelementptr inbounds nuw i8, ptr %2545, i64 7640
  br label %2594

2594:                                             ; preds = %2584, %2623
  %2595 = phi <8 x i64> [ splat (i64 -1), %2584 ], [ %2608, %2623 ]
  %2596 = phi i64 [ %2579, %2584 ], [ %2599, %2623 ]
  %2597 = phi <8 x double> [ %2582, %2584 ], [ %2637, %2623 ]
  %2598 = phi <8 x double> [ zeroinitializer, %2584 ], [ %2633, %2623 ]
  %2599 = add nsw i64 %2596, -1
  %2600 = getelementptr inbounds nuw <8 x double>, ptr %2586, i64 %2599
  %2601 = load <8 x double>, ptr %2600, align 64, !tbaa !25, !noalias !104
  %2602 = getelementptr inbounds nuw <8 x double>, ptr %2588, i64 %2599
  %2603 = load <8 x double>, ptr %2602, align 64, !tbaa !25, !noalias !104
  %2604 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2603, <8 x double> %2047, <8 x double> %2601)
  %2605 = fcmp ogt <8 x double> %2604, %2541
  %2606 = select <8 x i1> %2605, <8 x i64> %2595, <8 x i64> zeroinitializer
  %2607 = icmp sgt i64 %2596, %2590
  %2608 = select i1 %2607, <8 x i64> %2606, <8 x i64> zeroinitializer
  %2609 = icmp slt i64 %2596, %2579
  br i1 %2609, label %2610, label %2619

2610:                                             ; preds = %2594
  %2611 = load ptr, ptr %2591, align 16, !tbaa !73, !noalias !104
  %2612 = getelementptr inbounds nuw <8 x double>, ptr %2611, i64 %2596
  %2613 = load <8 x double>, ptr %2612, align 64, !tbaa !25, !noalias !104
  %2614 = fsub <8 x double> %2604, %2047
  %2615 = fmul <8 x double> %2614, %2613
  %2616 = icmp eq <8 x i64> %2608, %2595
  %2617 = select <8 x i1> %2616, <8 x double> zeroinitializer, <8 x double> %2615
  %2618 = fadd <8 x double> %2598, %2617
  br label %2619

2619:                                             ; preds = %2610, %2594
  %2620 = phi <8 x double> [ %2618, %2610 ], [ %2598, %2594 ]
  %2621 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2608)
  %2622 = icmp eq i64 %2621, 0
  br i1 %2622, label %2639, label %2623

2623:                                             ; preds = %2619
  %2624 = load ptr, ptr %2592, align 8, !tbaa !72, !noalias !104
  %2625 = getelementptr inbounds nuw <8 x double>, ptr %2624, i64 %2599
  %2626 = load <8 x double>, ptr %2625, align 64, !tbaa !25, !noalias !104
  %2627 = load ptr, ptr %2593, align 8, !tbaa !74, !noalias !104
  %2628 = getelementptr inbounds nuw <8 x double>, ptr %2627, i64 %2599
  %2629 = load <8 x double>, ptr %2628, align 64, !tbaa !25, !noalias !104
  %2630 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2629, <8 x double> %2047, <8 x double> %2626)
  %2631 = icmp eq <8 x i64> %2608, zeroinitializer
  %2632 = select <8 x i1> %2631, <8 x double> zeroinitializer, <8 x double> %2630
  %2633 = fadd <8 x double> %2620, %2632
  %2634 = uitofp nneg i64 %2599 to double
  %2635 = insertelement <8 x double> poison, double %2634, i64 0
  %2636 = shufflevector <8 x double> %2635, <8 x double> poison, <8 x i32> zeroinitializer
  %2637 = select <8 x i1> %2631, <8 x double> %2597, <8 x double> %2636
  %2638 = icmp samesign ugt i64 %2596, 1
  br i1 %2638, label %2594, label %2639, !llvm.loop !92

2639:                                             ; preds = %2623, %2619, %2542
  %2640 = phi <8 x double> [ %2582, %2542 ], [ %2597, %2619 ], [ %2637, %2623 ]
  %2641 = phi <8 x double> [ zeroinitializer, %2542 ], [ %2620, %2619 ], [ %2633, %2623 ]
  %2642 = getelementptr inbounds nuw i8, ptr %2545, i64 6080
  %2643 = load <8 x double>, ptr %2642, align 64, !tbaa !25, !noalias !101
  %2644 = getelementptr inbounds nuw i8, ptr %2545, i64 5504
  %2645 = load <8 x double>, ptr %2644, align 64, !tbaa !25, !noalias !101
  %2646 = getelementptr inbounds nuw i8, ptr %2545, i64 7040
  %2647 = load <8 x double>, ptr %2646, align 64, !tbaa !25, !noalias !101
  %2648 = fneg <8 x double> %2647
  %2649 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2643, <8 x double> %2645, <8 x double> %2648)
  %2650 = getelementptr inbounds nuw i8, ptr %2545, i64 6976
  %2651 = load <8 x double>, ptr %2650, align 64, !tbaa !25, !noalias !101
  %2652 = fadd <8 x double> %2643, %2651
  %2653 = getelementptr inbounds nuw i8, ptr %2545, i64 7360
  %2654 = load <8 x i64>, ptr %2653, align 64, !tbaa !25, !noalias !101
  %2655 = getelementptr inbounds nuw i8, ptr %2545, i64 7712
  %2656 = load ptr, ptr %2655, align 32, !tbaa !80, !noalias !101
  %2657 = load <8 x double>, ptr %2656, align 64, !tbaa !25, !noalias !101
  %2658 = fmul <8 x double> %2643, %2657
  %2659 = icmp eq <8 x i64> %2654, zeroinitializer
  %2660 = select <8 x i1> %2659, <8 x double> %2649, <8 x double> %2658
  %2661 = getelementptr inbounds nuw i8, ptr %2545, i64 7720
  %2662 = load ptr, ptr %2661, align 8, !tbaa !81, !noalias !101
  %2663 = load <8 x double>, ptr %2662, align 64, !tbaa !25, !noalias !101
  %2664 = fsub <8 x double> splat (double 1.000000e+00), %2663
  %2665 = fmul <8 x double> %2643, %2664
  %2666 = select <8 x i1> %2659, <8 x double> %2652, <8 x double> %2665
  %2667 = fneg <8 x double> %2666
  %2668 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2667, <8 x double> %2047, <8 x double> %2660)
  %2669 = fcmp olt <8 x double> %2640, %2582
  %2670 = and <8 x i1> %2552, %2669
  %2671 = fcmp ogt <8 x double> %2641, zeroinitializer
  %2672 = fcmp oge <8 x double> %2668, zeroinitializer
  %2673 = and <8 x i1> %2671, %2672
  %2674 = and <8 x i1> %2670, %2673
  %2675 = sext <8 x i1> %2674 to <8 x i64>
  %2676 = xor <8 x i64> %2675, splat (i64 -1)
  %2677 = fadd <8 x double> %2641, %2668
  %2678 = fcmp ogt <8 x double> %2677, zeroinitializer
  %2679 = select <8 x i1> %2678, <8 x i1> %2670, <8 x i1> zeroinitializer
  %2680 = select <8 x i1> %2679, <8 x i64> %2676, <8 x i64> zeroinitializer
  %2681 = or <8 x i64> %2680, %2675
  %2682 = fmul <8 x double> %2540, %2668
  %2683 = select <8 x i1> %2674, <8 x double> %2682, <8 x double> zeroinitializer
  %2684 = icmp eq <8 x i64> %2681, zeroinitializer
  %2685 = select <8 x i1> %2684, <8 x double> %2577, <8 x double> %2683
  %2686 = select <8 x i1> %2684, <8 x double> %2578, <8 x double> %2047
  %2687 = getelementptr inbounds nuw i8, ptr %2545, i64 5632
  store <8 x double> %2685, ptr %2687, align 64, !tbaa !25, !noalias !101
  %2688 = getelementptr inbounds nuw i8, ptr %2545, i64 5568
  store <8 x double> %2686, ptr %2688, align 64, !tbaa !25, !noalias !101
  %2689 = fmul <8 x double> %2540, %2641
  %2690 = fmul <8 x double> %2540, %2677
  %2691 = icmp eq <8 x i64> %2680, zeroinitializer
  %2692 = select <8 x i1> %2691, <8 x double> zeroinitializer, <8 x double> %2690
  %2693 = select <8 x i1> %2674, <8 x double> %2689, <8 x double> %2692
  %2694 = getelementptr inbounds nuw i8, ptr %2545, i64 5696
  store <8 x double> %2693, ptr %2694, align 64, !tbaa !25, !noalias !101
  %2695 = load i64, ptr %140, align 8, !tbaa !20, !noalias !101
  %2696 = sitofp i64 %2695 to double
  %2697 = insertelement <8 x double> poison, double %2696, i64 0
  %2698 = shufflevector <8 x double> %2697, <8 x double> poison, <8 x i32> zeroinitializer
  %2699 = select <8 x i1> %2684, <8 x double> %2698, <8 x double> %2640
  %2700 = getelementptr inbounds nuw i8, ptr %2545, i64 5760
  store <8 x double> %2699, ptr %2700, align 64, !tbaa !25, !noalias !101
  %2701 = add nuw nsw i64 %2543, 1
  %2702 = load i64, ptr %149, align 64, !tbaa !16, !noalias !101
  %2703 = icmp slt i64 %2701, %2702
  br i1 %2703, label %2542, label %2704, !llvm.loop !93

2704:                                             ; preds = %2639, %2498
  %2705 = phi i64 [ %2534, %2498 ], [ %2702, %2639 ]
  %2706 = icmp sgt i64 %2705, 0
  br i1 %2706, label %2825, label %2707

2707:                                             ; preds = %2704, %2535
  %2708 = phi i64 [ %2705, %2704 ], [ %1809, %2535 ]
  %2709 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %2710 = load <8 x double>, ptr %215, align 64, !tbaa !25
  br label %2739

2711:                                             ; preds = %2898
  %2712 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %2713 = load <8 x double>, ptr %215, align 64, !tbaa !25
  %2714 = icmp sgt i64 %2922, 0
  br i1 %2714, label %2715, label %2739

2715:                                             ; preds = %2711
  %2716 = load ptr, ptr %150, align 8, !tbaa !27
  br label %2717

2717:                                             ; preds = %2715, %2717
  %2718 = phi <8 x double> [ zeroinitializer, %2715 ], [ %2731, %2717 ]
  %2719 = phi <8 x double> [ %2713, %2715 ], [ %2736, %2717 ]
  %2720 = phi i64 [ 0, %2715 ], [ %2737, %2717 ]
  %2721 = getelementptr inbounds nuw %struct.Piece, ptr %2716, i64 %2720
  %2722 = getelementptr inbounds nuw i8, ptr %2721, i64 7488
  %2723 = load <8 x i64>, ptr %2722, align 64, !tbaa !25
  %2724 = getelementptr inbounds nuw i8, ptr %2721, i64 128
  %2725 = load <8 x double>, ptr %2724, align 64, !tbaa !25
  %2726 = getelementptr inbounds nuw i8, ptr %2721, i64 6336
  %2727 = load <8 x double>, ptr %2726, align 64, !tbaa !25
  %2728 = fmul <8 x double> %2725, %2727
  %2729 = icmp eq <8 x i64> %2723, zeroinitializer
  %2730 = select <8 x i1> %2729, <8 x double> %2728, <8 x double> zeroinitializer
  %2731 = fadd <8 x double> %2718, %2730
  %2732 = getelementptr inbounds nuw i8, ptr %2721, i64 6208
  %2733 = load <8 x double>, ptr %2732, align 64, !tbaa !25
  %2734 = fmul <8 x double> %2725, %2733
  %2735 = select <8 x i1> %2729, <8 x double> %2734, <8 x double> zeroinitializer
  %2736 = fadd <8 x double> %2719, %2735
  %2737 = add nuw nsw i64 %2720, 1
  %2738 = icmp eq i64 %2737, %2922
  br i1 %2738, label %2739, label %2717, !llvm.loop !107

2739:                                             ; preds = %2717, %2707, %2711
  %2740 = phi i1 [ false, %2711 ], [ false, %2707 ], [ true, %2717 ]
  %2741 = phi <8 x double> [ %2713, %2711 ], [ %2710, %2707 ], [ %2713, %2717 ]
  %2742 = phi <8 x double> [ %2712, %2711 ], [ %2709, %2707 ], [ %2712, %2717 ]
  %2743 = phi i64 [ %2922, %2711 ], [ %2708, %2707 ], [ %2922, %2717 ]
  %2744 = phi <8 x double> [ %2713, %2711 ], [ %2710, %2707 ], [ %2736, %2717 ]
  %2745 = phi <8 x double> [ zeroinitializer, %2711 ], [ zeroinitializer, %2707 ], [ %2731, %2717 ]
  %2746 = load <8 x double>, ptr %198, align 64, !tbaa !25
  %2747 = fsub <8 x double> %2742, %2746
  %2748 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2741, <8 x double> %2747, <8 x double> %2745)
  store <8 x double> %2748, ptr %176, align 64, !tbaa !25
  %2749 = load <8 x double>, ptr %180, align 64, !tbaa !25
  %2750 = fcmp ule <8 x double> %2749, zeroinitializer
  %2751 = load <8 x double>, ptr %216, align 64, !tbaa !25
  %2752 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2749, <8 x double> splat (double 5.000000e-01), <8 x double> %2751)
  %2753 = fsub <8 x double> %2752, %2742
  %2754 = fcmp ogt <8 x double> %2749, splat (double 1.000000e-30)
  %2755 = select <8 x i1> %2754, <8 x double> %2749, <8 x double> splat (double 1.000000e-30)
  %2756 = fdiv <8 x double> %2753, %2755
  %2757 = fcmp ogt <8 x double> %2756, zeroinitializer
  %2758 = select <8 x i1> %2757, <8 x double> %2756, <8 x double> zeroinitializer
  %2759 = fcmp olt <8 x double> %2758, splat (double 1.000000e+00)
  %2760 = select <8 x i1> %2759, <8 x double> %2758, <8 x double> splat (double 1.000000e+00)
  %2761 = load <8 x double>, ptr %175, align 64, !tbaa !25
  %2762 = load <8 x i64>, ptr %174, align 64, !tbaa !25
  %2763 = icmp eq <8 x i64> %2762, zeroinitializer
  %2764 = select <8 x i1> %2763, <8 x double> zeroinitializer, <8 x double> splat (double 1.000000e+00)
  %2765 = select <8 x i1> %2750, <8 x double> %2764, <8 x double> %2760
  %2766 = fmul <8 x double> %2761, %2765
  %2767 = fcmp ule <8 x double> %2766, zeroinitializer
  %2768 = fcmp uge <8 x double> %2766, %2761
  %2769 = or <8 x i1> %2767, %2768
  %2770 = or <8 x i1> %2750, %2769
  %2771 = fdiv <8 x double> %2761, %2755
  %2772 = select <8 x i1> %2770, <8 x double> zeroinitializer, <8 x double> %2771
  %2773 = fadd <8 x double> %2744, %2772
  %2774 = load <8 x double>, ptr %168, align 64, !tbaa !25
  %2775 = load <8 x double>, ptr %1, align 64, !tbaa !25
  %2776 = fmul <8 x double> %2742, %2775
  %2777 = load <8 x double>, ptr %177, align 64, !tbaa !25
  %2778 = load <8 x double>, ptr %178, align 64, !tbaa !25
  %2779 = fmul <8 x double> %2778, splat (double 5.000000e-01)
  %2780 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2779, <8 x double> %2742, <8 x double> %2777)
  %2781 = load <8 x double>, ptr %179, align 64, !tbaa !25
  %2782 = fmul <8 x double> %2742, %2781
  %2783 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2776, <8 x double> %2780, <8 x double> %2782)
  %2784 = load <8 x double>, ptr %169, align 64, !tbaa !25
  %2785 = load <8 x double>, ptr %172, align 64, !tbaa !25
  %2786 = fmul <8 x double> %2775, %2785
  %2787 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2779, <8 x double> %2785, <8 x double> %2777)
  %2788 = fmul <8 x double> %2781, %2785
  %2789 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2786, <8 x double> %2787, <8 x double> %2788)
  %2790 = fmul <8 x double> %2784, %2789
  %2791 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2774, <8 x double> %2783, <8 x double> %2790)
  %2792 = load <8 x double>, ptr %170, align 64, !tbaa !25
  %2793 = load <8 x double>, ptr %173, align 64, !tbaa !25
  %2794 = fmul <8 x double> %2775, %2793
  %2795 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2779, <8 x double> %2793, <8 x double> %2777)
  %2796 = fmul <8 x double> %2781, %2793
  %2797 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2794, <8 x double> %2795, <8 x double> %2796)
  %2798 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2792, <8 x double> %2797, <8 x double> %2791)
  %2799 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2778, <8 x double> %2742, <8 x double> %2777)
  %2800 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2775, <8 x double> %2799, <8 x double> %2781)
  %2801 = load <8 x double>, ptr %181, align 64, !tbaa !25
  %2802 = fcmp une <8 x double> %2801, zeroinitializer
  %2803 = fadd <8 x double> %2748, %2798
  %2804 = fsub <8 x double> %2803, %2766
  %2805 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2774, <8 x double> %2800, <8 x double> %2773)
  %2806 = fdiv <8 x double> %2804, %2805
  %2807 = fsub <8 x double> %2742, %2806
  %2808 = select <8 x i1> %2802, <8 x double> %2742, <8 x double> %2807
  store <8 x double> %2808, ptr %171, align 64, !tbaa !25
  %2809 = load <8 x double>, ptr %217, align 64, !tbaa !25
  %2810 = fneg <8 x double> %2784
  %2811 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2810, <8 x double> %2809, <8 x double> %2766)
  %2812 = load <8 x double>, ptr %218, align 64, !tbaa !25
  %2813 = fneg <8 x double> %2792
  %2814 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2813, <8 x double> %2812, <8 x double> %2811)
  %2815 = fdiv <8 x double> %2814, %2774
  %2816 = load <8 x double>, ptr %219, align 64, !tbaa !25
  %2817 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2810, <8 x double> %2816, <8 x double> %2748)
  %2818 = load <8 x double>, ptr %220, align 64, !tbaa !25
  %2819 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2813, <8 x double> %2818, <8 x double> %2817)
  %2820 = fdiv <8 x double> %2819, %2774
  %2821 = load <8 x double>, ptr %221, align 64, !tbaa !25
  %2822 = select <8 x i1> %2802, <8 x double> %2821, <8 x double> %2815
  store <8 x double> %2822, ptr %221, align 64, !tbaa !25
  %2823 = load <8 x double>, ptr %222, align 64, !tbaa !25
  %2824 = select <8 x i1> %2802, <8 x double> %2823, <8 x double> %2820
  store <8 x double> %2824, ptr %222, align 64, !tbaa !25
  br i1 %2740, label %2924, label %3187

2825:                                             ; preds = %2704, %2898
  %2826 = phi i64 [ %2921, %2898 ], [ 0, %2704 ]
  %2827 = load ptr, ptr %150, align 8, !tbaa !27
  %2828 = getelementptr inbounds nuw %struct.Piece, ptr %2827, i64 %2826
  %2829 = getelementptr inbounds nuw i8, ptr %2828, i64 5568
  %2830 = load <8 x double>, ptr %2829, align 64, !tbaa !25
  %2831 = load i64, ptr %140, align 8, !tbaa !20
  %2832 = icmp sgt i64 %2831, 0
  br i1 %2832, label %2833, label %2838

2833:                                             ; preds = %2825
  %2834 = getelementptr inbounds nuw i8, ptr %2828, i64 5760
  %2835 = getelementptr inbounds nuw i8, ptr %2828, i64 7608
  %2836 = getelementptr inbounds nuw i8, ptr %2828, i64 7616
  %2837 = getelementptr inbounds nuw i8, ptr %2828, i64 7560
  br label %2853

2838:                                             ; preds = %2853, %2825
  %2839 = getelementptr inbounds nuw i8, ptr %2828, i64 7360
  %2840 = load <8 x i64>, ptr %2839, align 64, !tbaa !25
  %2841 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2840)
  %2842 = icmp eq i64 %2841, 0
  %2843 = load i64, ptr %141, align 16, !tbaa !21
  %2844 = icmp sgt i64 %2843, 0
  br i1 %2842, label %2850, label %2845

2845:                                             ; preds = %2838
  br i1 %2844, label %2846, label %2898

2846:                                             ; preds = %2845
  %2847 = getelementptr inbounds nuw i8, ptr %2828, i64 7712
  %2848 = getelementptr inbounds nuw i8, ptr %2828, i64 7720
  %2849 = getelementptr inbounds nuw i8, ptr %2828, i64 7680
  br label %2873

2850:                                             ; preds = %2838
  br i1 %2844, label %2851, label %2898

2851:                                             ; preds = %2850
  %2852 = getelementptr inbounds nuw i8, ptr %2828, i64 7680
  br label %2891

2853:                                             ; preds = %2833, %2853
  %2854 = phi <8 x double> [ %2830, %2833 ], [ %2869, %2853 ]
  %2855 = phi i64 [ %2831, %2833 ], [ %2856, %2853 ]
  %2856 = add nsw i64 %2855, -1
  %2857 = load <8 x double>, ptr %2834, align 64, !tbaa !25
  %2858 = uitofp nneg i64 %2856 to double
  %2859 = insertelement <8 x double> poison, double %2858, i64 0
  %2860 = shufflevector <8 x double> %2859, <8 x double> poison, <8 x i32> zeroinitializer
  %2861 = fcmp ugt <8 x double> %2857, %2860
  %2862 = load ptr, ptr %2835, align 8, !tbaa !75
  %2863 = getelementptr inbounds nuw <8 x double>, ptr %2862, i64 %2856
  %2864 = load <8 x double>, ptr %2863, align 64, !tbaa !25
  %2865 = load ptr, ptr %2836, align 64, !tbaa !76
  %2866 = getelementptr inbounds nuw <8 x double>, ptr %2865, i64 %2856
  %2867 = load <8 x double>, ptr %2866, align 64, !tbaa !25
  %2868 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2867, <8 x double> %2854, <8 x double> %2864)
  %2869 = select <8 x i1> %2861, <8 x double> %2868, <8 x double> %2830
  %2870 = load ptr, ptr %2837, align 8, !tbaa !58
  %2871 = getelementptr inbounds nuw <8 x double>, ptr %2870, i64 %2856
  store <8 x double> %2869, ptr %2871, align 64, !tbaa !25
  %2872 = icmp samesign ugt i64 %2855, 1
  br i1 %2872, label %2853, label %2838, !llvm.loop !108

2873:                                             ; preds = %2846, %2873
  %2874 = phi i64 [ 0, %2846 ], [ %2888, %2873 ]
  %2875 = phi <8 x double> [ %2830, %2846 ], [ %2885, %2873 ]
  %2876 = load <8 x i64>, ptr %2839, align 64, !tbaa !25
  %2877 = load ptr, ptr %2847, align 32, !tbaa !80
  %2878 = getelementptr inbounds nuw <8 x double>, ptr %2877, i64 %2874
  %2879 = load <8 x double>, ptr %2878, align 64, !tbaa !25
  %2880 = load ptr, ptr %2848, align 8, !tbaa !81
  %2881 = getelementptr inbounds nuw <8 x double>, ptr %2880, i64 %2874
  %2882 = load <8 x double>, ptr %2881, align 64, !tbaa !25
  %2883 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2882, <8 x double> %2875, <8 x double> %2879)
  %2884 = icmp eq <8 x i64> %2876, zeroinitializer
  %2885 = select <8 x i1> %2884, <8 x double> %2830, <8 x double> %2883
  %2886 = load ptr, ptr %2849, align 64, !tbaa !109
  %2887 = getelementptr inbounds nuw <8 x double>, ptr %2886, i64 %2874
  store <8 x double> %2885, ptr %2887, align 64, !tbaa !25
  %2888 = add nuw nsw i64 %2874, 1
  %2889 = load i64, ptr %141, align 16, !tbaa !21
  %2890 = icmp slt i64 %2888, %2889
  br i1 %2890, label %2873, label %2898, !llvm.loop !110

2891:                                             ; preds = %2851, %2891
  %2892 = phi i64 [ 0, %2851 ], [ %2895, %2891 ]
  %2893 = load ptr, ptr %2852, align 64, !tbaa !109
  %2894 = getelementptr inbounds nuw <8 x double>, ptr %2893, i64 %2892
  store <8 x double> %2830, ptr %2894, align 64, !tbaa !25
  %2895 = add nuw nsw i64 %2892, 1
  %2896 = load i64, ptr %141, align 16, !tbaa !21
  %2897 = icmp slt i64 %2895, %2896
  br i1 %2897, label %2891, label %2898, !llvm.loop !111

2898:                                             ; preds = %2873, %2891, %2845, %2850
  %2899 = phi <8 x double> [ %2830, %2850 ], [ %2830, %2845 ], [ %2830, %2891 ], [ %2885, %2873 ]
  %2900 = load <8 x i64>, ptr %2839, align 64, !tbaa !25
  %2901 = getelementptr inbounds nuw i8, ptr %2828, i64 6272
  %2902 = load <8 x double>, ptr %2901, align 64, !tbaa !25
  %2903 = icmp eq <8 x i64> %2900, zeroinitializer
  %2904 = select <8 x i1> %2903, <8 x double> zeroinitializer, <8 x double> %2902
  %2905 = fsub <8 x double> splat (double 1.000000e+00), %2904
  %2906 = getelementptr inbounds nuw i8, ptr %2828, i64 5504
  %2907 = load <8 x double>, ptr %2906, align 64, !tbaa !25
  %2908 = fmul <8 x double> %2904, %2907
  %2909 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2905, <8 x double> %2899, <8 x double> %2908)
  %2910 = getelementptr inbounds nuw i8, ptr %2828, i64 6464
  store <8 x double> %2909, ptr %2910, align 64, !tbaa !25
  %2911 = getelementptr inbounds nuw i8, ptr %2828, i64 6208
  %2912 = load <8 x double>, ptr %2911, align 64, !tbaa !25
  %2913 = fsub <8 x double> %2907, %2899
  %2914 = fmul <8 x double> %2913, %2912
  %2915 = getelementptr inbounds nuw i8, ptr %2828, i64 6336
  store <8 x double> %2914, ptr %2915, align 64, !tbaa !25
  %2916 = getelementptr inbounds nuw i8, ptr %2828, i64 3200
  %2917 = load <8 x double>, ptr %2916, align 64, !tbaa !25
  %2918 = fdiv <8 x double> %2914, %2917
  %2919 = fsub <8 x double> %2907, %2918
  %2920 = getelementptr inbounds nuw i8, ptr %2828, i64 6400
  store <8 x double> %2919, ptr %2920, align 64, !tbaa !25
  %2921 = add nuw nsw i64 %2826, 1
  %2922 = load i64, ptr %149, align 64, !tbaa !16
  %2923 = icmp slt i64 %2921, %2922
  br i1 %2923, label %2825, label %2711, !llvm.loop !112

2924:                                             ; preds = %2739, %3142
  %2925 = phi i64 [ %3184, %3142 ], [ 0, %2739 ]
  %2926 = phi <8 x double> [ %3183, %3142 ], [ zeroinitializer, %2739 ]
  %2927 = load ptr, ptr %150, align 8, !tbaa !27
  %2928 = getelementptr inbounds nuw %struct.Piece, ptr %2927, i64 %2925
  %2929 = getelementptr inbounds nuw i8, ptr %2928, i64 5632
  %2930 = load <8 x double>, ptr %2929, align 64, !tbaa !25
  %2931 = getelementptr inbounds nuw i8, ptr %2928, i64 5696
  %2932 = load <8 x double>, ptr %2931, align 64, !tbaa !25
  %2933 = fadd <8 x double> %2930, %2932
  %2934 = getelementptr inbounds nuw i8, ptr %2928, i64 5568
  %2935 = load <8 x double>, ptr %2934, align 64, !tbaa !25
  %2936 = load <8 x double>, ptr %214, align 64, !tbaa !25
  %2937 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2936, <8 x double> splat (double 0xC00BBAC89E13FCB7), <8 x double> splat (double 0xC09E841BADC0980B))
  %2938 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2936, <8 x double> %2937, <8 x double> splat (double 0x4142F8368A3D70A4))
  %2939 = getelementptr inbounds nuw i8, ptr %2928, i64 5312
  %2940 = load <8 x double>, ptr %2939, align 64, !tbaa !25
  %2941 = getelementptr inbounds nuw i8, ptr %2928, i64 4032
  %2942 = load <8 x double>, ptr %2941, align 64, !tbaa !25
  %2943 = fneg <8 x double> %2940
  %2944 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2943, <8 x double> %2942, <8 x double> %2933)
  %2945 = getelementptr inbounds nuw i8, ptr %2928, i64 5376
  %2946 = load <8 x double>, ptr %2945, align 64, !tbaa !25
  %2947 = getelementptr inbounds nuw i8, ptr %2928, i64 4800
  %2948 = load <8 x double>, ptr %2947, align 64, !tbaa !25
  %2949 = fneg <8 x double> %2946
  %2950 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2949, <8 x double> %2948, <8 x double> %2944)
  %2951 = getelementptr inbounds nuw i8, ptr %2928, i64 5248
  %2952 = load <8 x double>, ptr %2951, align 64, !tbaa !25
  %2953 = fdiv <8 x double> %2950, %2952
  %2954 = getelementptr inbounds nuw i8, ptr %2928, i64 1600
  %2955 = load <8 x double>, ptr %2954, align 64, !tbaa !25
  %2956 = fsub <8 x double> %2955, %2953
  %2957 = getelementptr inbounds nuw i8, ptr %2928, i64 3904
  %2958 = load <8 x double>, ptr %2957, align 64, !tbaa !25
  %2959 = getelementptr inbounds nuw i8, ptr %2928, i64 7168
  %2960 = load <8 x double>, ptr %2959, align 64, !tbaa !25
  %2961 = fsub <8 x double> %2958, %2960
  %2962 = getelementptr inbounds nuw i8, ptr %2928, i64 6784
  %2963 = load <8 x double>, ptr %2962, align 64, !tbaa !25
  %2964 = getelementptr inbounds nuw i8, ptr %2928, i64 1280
  %2965 = load <8 x double>, ptr %2964, align 64, !tbaa !25
  %2966 = fmul <8 x double> %2963, %2965
  %2967 = getelementptr inbounds nuw i8, ptr %2928, i64 6464
  %2968 = load <8 x double>, ptr %2967, align 64, !tbaa !25
  %2969 = fsub <8 x double> %2968, %2935
  %2970 = fmul <8 x double> %2966, %2969
  %2971 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2938, <8 x double> %2933, <8 x double> %2970)
  %2972 = fsub <8 x double> %2956, %2961
  %2973 = getelementptr inbounds nuw i8, ptr %2928, i64 2944
  %2974 = getelementptr inbounds nuw i8, ptr %2928, i64 3072
  %2975 = load <8 x double>, ptr %2974, align 64, !tbaa !25
  %2976 = fsub <8 x double> %2972, %2975
  %2977 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %2976)
  %2978 = getelementptr inbounds nuw i8, ptr %2928, i64 832
  %2979 = load <8 x double>, ptr %2978, align 64, !tbaa !25
  %2980 = fdiv <8 x double> %2977, %2979
  %2981 = getelementptr inbounds nuw i8, ptr %2928, i64 7360
  %2982 = load <8 x i64>, ptr %2981, align 64, !tbaa !25
  %2983 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2982)
  %2984 = icmp eq i64 %2983, 0
  br i1 %2984, label %3142, label %2985

2985:                                             ; preds = %2924
  %2986 = getelementptr inbounds nuw i8, ptr %2928, i64 3776
  %2987 = load <8 x double>, ptr %2986, align 64, !tbaa !25
  %2988 = fcmp ogt <8 x double> %2961, %2956
  %2989 = getelementptr inbounds nuw i8, ptr %2928, i64 7296
  %2990 = load <8 x double>, ptr %2989, align 64, !tbaa !25
  %2991 = fcmp oeq <8 x double> %2990, zeroinitializer
  %2992 = select <8 x i1> %2991, <8 x i1> %2988, <8 x i1> zeroinitializer
  %2993 = select <8 x i1> %2992, <8 x i64> %2982, <8 x i64> zeroinitializer
  %2994 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %2993)
  %2995 = icmp eq i64 %2994, 0
  br i1 %2995, label %3066, label %2996

2996:                                             ; preds = %2985
  %2997 = fsub <8 x double> %2961, %2956
  %2998 = fdiv <8 x double> %2997, %2979
  %2999 = getelementptr inbounds nuw i8, ptr %2928, i64 7592
  %3000 = load ptr, ptr %2999, align 8, !tbaa !61
  %3001 = load i64, ptr %140, align 8, !tbaa !20
  %3002 = add nsw i64 %3001, -1
  %3003 = getelementptr inbounds <8 x double>, ptr %3000, i64 %3002
  %3004 = load <8 x double>, ptr %3003, align 64, !tbaa !25
  %3005 = icmp sgt i64 %3001, 1
  br i1 %3005, label %3006, label %3058

3006:                                             ; preds = %2996
  %3007 = getelementptr inbounds nuw i8, ptr %2928, i64 7552
  %3008 = load i64, ptr %3007, align 64, !tbaa !30
  %3009 = getelementptr inbounds nuw i8, ptr %2928, i64 4416
  %3010 = getelementptr inbounds nuw i8, ptr %2928, i64 1536
  %3011 = getelementptr inbounds nuw i8, ptr %2928, i64 7648
  br label %3012

3012:                                             ; preds = %3006, %3055
  %3013 = phi <8 x double> [ %2987, %3006 ], [ %3050, %3055 ]
  %3014 = phi i64 [ %3002, %3006 ], [ %3056, %3055 ]
  %3015 = phi <8 x double> [ %3004, %3006 ], [ %3038, %3055 ]
  %3016 = phi <8 x i64> [ %2993, %3006 ], [ %3042, %3055 ]
  %3017 = phi <8 x double> [ %2998, %3006 ], [ %3049, %3055 ]
  %3018 = icmp slt i64 %3014, %3008
  br i1 %3018, label %3019, label %3025

3019:                                             ; preds = %3012
  %3020 = load ptr, ptr %3011, align 32, !tbaa !71
  %3021 = getelementptr inbounds nuw <8 x double>, ptr %3020, i64 %3014
  %3022 = load <8 x double>, ptr %3021, align 64, !tbaa !25
  %3023 = load <8 x double>, ptr %3010, align 64, !tbaa !25
  %3024 = fmul <8 x double> %3022, %3023
  br label %3033

3025:                                             ; preds = %3012
  %3026 = load <8 x double>, ptr %3009, align 64, !tbaa !25
  %3027 = load <8 x double>, ptr %3010, align 64, !tbaa !25
  %3028 = load ptr, ptr %3011, align 32, !tbaa !71
  %3029 = getelementptr inbounds nuw <8 x double>, ptr %3028, i64 %3014
  %3030 = load <8 x double>, ptr %3029, align 64, !tbaa !25
  %3031 = fsub <8 x double> %3026, %3027
  %3032 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3030, <8 x double> %3031, <8 x double> %3027)
  br label %3033

3033:                                             ; preds = %3019, %3025
  %3034 = phi <8 x double> [ %3024, %3019 ], [ %3032, %3025 ]
  %3035 = getelementptr inbounds nuw <8 x double>, ptr %3000, i64 %3014
  %3036 = load <8 x double>, ptr %3035, align 64, !tbaa !25
  %3037 = icmp eq <8 x i64> %3016, zeroinitializer
  %3038 = select <8 x i1> %3037, <8 x double> %3015, <8 x double> %3036
  %3039 = fsub <8 x double> %3013, %3034
  %3040 = fmul <8 x double> %3039, %3038
  %3041 = fcmp olt <8 x double> %3040, %3017
  %3042 = select <8 x i1> %3041, <8 x i64> %3016, <8 x i64> zeroinitializer
  %3043 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3042)
  %3044 = icmp eq i64 %3043, 0
  br i1 %3044, label %3058, label %3045

3045:                                             ; preds = %3033
  %3046 = fneg <8 x double> %3038
  %3047 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3046, <8 x double> %3039, <8 x double> %3017)
  %3048 = icmp eq <8 x i64> %3042, zeroinitializer
  %3049 = select <8 x i1> %3048, <8 x double> %3017, <8 x double> %3047
  %3050 = select <8 x i1> %3048, <8 x double> %3013, <8 x double> %3034
  %3051 = icmp eq i64 %3014, 1
  br i1 %3051, label %3052, label %3055

3052:                                             ; preds = %3045
  %3053 = load <8 x double>, ptr %3000, align 64, !tbaa !25
  %3054 = select <8 x i1> %3048, <8 x double> %3038, <8 x double> %3053
  br label %3058

3055:                                             ; preds = %3045
  %3056 = add nsw i64 %3014, -1
  %3057 = icmp sgt i64 %3014, 1
  br i1 %3057, label %3012, label %3058, !llvm.loop !113

3058:                                             ; preds = %3055, %3033, %3052, %2996
  %3059 = phi <8 x double> [ %2998, %2996 ], [ %3049, %3052 ], [ %3017, %3033 ], [ %3049, %3055 ]
  %3060 = phi <8 x double> [ %2987, %2996 ], [ %3050, %3052 ], [ %3013, %3033 ], [ %3050, %3055 ]
  %3061 = phi <8 x double> [ %3004, %2996 ], [ %3054, %3052 ], [ %3038, %3033 ], [ %3038, %3055 ]
  %3062 = fdiv <8 x double> %3059, %3061
  %3063 = fsub <8 x double> %3060, %3062
  %3064 = icmp eq <8 x i64> %2993, zeroinitializer
  %3065 = select <8 x i1> %3064, <8 x double> %2987, <8 x double> %3063
  br label %3066

3066:                                             ; preds = %3058, %2985
  %3067 = phi <8 x double> [ %3065, %3058 ], [ %2987, %2985 ]
  %3068 = load <8 x double>, ptr %2973, align 64, !tbaa !25
  %3069 = getelementptr inbounds nuw i8, ptr %2928, i64 2560
  %3070 = load <8 x double>, ptr %3069, align 64, !tbaa !25
  %3071 = getelementptr inbounds nuw i8, ptr %2928, i64 2624
  %3072 = load <8 x double>, ptr %3071, align 64, !tbaa !25
  %3073 = getelementptr inbounds nuw i8, ptr %2928, i64 2688
  %3074 = load <8 x double>, ptr %3073, align 64, !tbaa !25
  %3075 = getelementptr inbounds nuw i8, ptr %2928, i64 2752
  %3076 = load <8 x double>, ptr %3075, align 64, !tbaa !25
  %3077 = load <8 x double>, ptr %2928, align 64, !tbaa !25
  %3078 = fmul <8 x double> %3077, splat (double 1.000000e-09)
  br label %3079

3079:                                             ; preds = %3066, %3079
  %3080 = phi <8 x i64> [ splat (i64 -1), %3066 ], [ %3097, %3079 ]
  %3081 = phi i32 [ 0, %3066 ], [ %3098, %3079 ]
  %3082 = phi <8 x double> [ %3068, %3066 ], [ %3094, %3079 ]
  %3083 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3082, <8 x double> %3076, <8 x double> %3074)
  %3084 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3082, <8 x double> %3083, <8 x double> %3072)
  %3085 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3082, <8 x double> %3084, <8 x double> %3070)
  %3086 = fsub <8 x double> %3085, %3067
  %3087 = fmul <8 x double> %3082, splat (double 3.000000e+00)
  %3088 = fmul <8 x double> %3087, %3076
  %3089 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3074, <8 x double> splat (double 2.000000e+00), <8 x double> %3088)
  %3090 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3082, <8 x double> %3089, <8 x double> %3072)
  %3091 = fdiv <8 x double> %3086, %3090
  %3092 = fsub <8 x double> %3082, %3091
  %3093 = icmp eq <8 x i64> %3080, zeroinitializer
  %3094 = select <8 x i1> %3093, <8 x double> %3082, <8 x double> %3092
  %3095 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3091)
  %3096 = fcmp oge <8 x double> %3095, %3078
  %3097 = select <8 x i1> %3096, <8 x i64> %3080, <8 x i64> zeroinitializer
  %3098 = add nuw nsw i32 %3081, 1
  %3099 = icmp samesign ult i32 %3081, 3
  %3100 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3097)
  %3101 = icmp ne i64 %3100, 0
  %3102 = select i1 %3099, i1 %3101, i1 false
  br i1 %3102, label %3079, label %3103, !llvm.loop !114

3103:                                             ; preds = %3079
  %3104 = fmul <8 x double> %3077, splat (double 2.800000e-01)
  %3105 = fcmp ogt <8 x double> %3094, %3104
  %3106 = select <8 x i1> %3105, <8 x double> %3094, <8 x double> %3104
  %3107 = fcmp olt <8 x double> %3106, %3077
  %3108 = select <8 x i1> %3107, <8 x double> %3106, <8 x double> %3077
  %3109 = fcmp olt <8 x double> %2961, %2956
  %3110 = icmp eq <8 x i64> %2982, zeroinitializer
  %3111 = select <8 x i1> %3110, <8 x i1> splat (i1 true), <8 x i1> %3109
  %3112 = select <8 x i1> %3111, <8 x double> %2961, <8 x double> %2956
  %3113 = fsub <8 x double> %3108, %3068
  %3114 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3113)
  %3115 = select <8 x i1> %3110, <8 x double> %2980, <8 x double> %3114
  %3116 = select <8 x i1> %3110, <8 x double> %3068, <8 x double> %3108
  store <8 x double> %3116, ptr %2973, align 64, !tbaa !25
  %3117 = getelementptr inbounds nuw i8, ptr %2928, i64 3008
  %3118 = load <8 x double>, ptr %3117, align 64, !tbaa !25
  %3119 = select <8 x i1> %3110, <8 x double> %3118, <8 x double> %3067
  store <8 x double> %3119, ptr %3117, align 64, !tbaa !25
  %3120 = getelementptr inbounds nuw i8, ptr %2928, i64 6720
  %3121 = load <8 x double>, ptr %3120, align 64, !tbaa !25
  %3122 = fmul <8 x double> %3121, splat (double 2.000000e+00)
  %3123 = getelementptr inbounds nuw i8, ptr %2928, i64 384
  %3124 = load <8 x double>, ptr %3123, align 64, !tbaa !25
  %3125 = getelementptr inbounds nuw i8, ptr %2928, i64 448
  %3126 = load <8 x double>, ptr %3125, align 64, !tbaa !25
  %3127 = getelementptr inbounds nuw i8, ptr %2928, i64 512
  %3128 = load <8 x double>, ptr %3127, align 64, !tbaa !25
  %3129 = fmul <8 x double> %2935, %3128
  %3130 = fmul <8 x double> %3129, splat (double 0x3FD5555555555555)
  %3131 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3126, <8 x double> splat (double 5.000000e-01), <8 x double> %3130)
  %3132 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2935, <8 x double> %3131, <8 x double> %3124)
  %3133 = fmul <8 x double> %2935, %3132
  %3134 = getelementptr inbounds nuw i8, ptr %2928, i64 768
  %3135 = load <8 x double>, ptr %3134, align 64, !tbaa !25
  %3136 = fneg <8 x double> %3135
  %3137 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3136, <8 x double> %2935, <8 x double> %3133)
  %3138 = fmul <8 x double> %3122, %3137
  %3139 = fsub <8 x double> %2971, %3138
  %3140 = select <8 x i1> %3110, <8 x double> %2971, <8 x double> %3139
  %3141 = fsub <8 x double> %2956, %3112
  br label %3142

3142:                                             ; preds = %2924, %3103
  %3143 = phi <8 x double> [ %2972, %2924 ], [ %3141, %3103 ]
  %3144 = phi <8 x double> [ %2980, %2924 ], [ %3115, %3103 ]
  %3145 = phi <8 x double> [ %2961, %2924 ], [ %3112, %3103 ]
  %3146 = phi <8 x double> [ %2971, %2924 ], [ %3140, %3103 ]
  store <8 x double> %3143, ptr %2974, align 64, !tbaa !25
  %3147 = getelementptr inbounds nuw i8, ptr %2928, i64 3136
  store <8 x double> %3145, ptr %3147, align 64, !tbaa !25
  %3148 = getelementptr inbounds nuw i8, ptr %2928, i64 3264
  store <8 x double> %2953, ptr %3148, align 64, !tbaa !25
  %3149 = getelementptr inbounds nuw i8, ptr %2928, i64 3456
  store <8 x double> %2930, ptr %3149, align 64, !tbaa !25
  %3150 = getelementptr inbounds nuw i8, ptr %2928, i64 3520
  store <8 x double> %2935, ptr %3150, align 64, !tbaa !25
  %3151 = getelementptr inbounds nuw i8, ptr %2928, i64 6976
  %3152 = load <8 x double>, ptr %3151, align 64, !tbaa !25
  %3153 = getelementptr inbounds nuw i8, ptr %2928, i64 7040
  %3154 = load <8 x double>, ptr %3153, align 64, !tbaa !25
  %3155 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3152, <8 x double> %2935, <8 x double> %3154)
  %3156 = getelementptr inbounds nuw i8, ptr %2928, i64 6336
  %3157 = load <8 x double>, ptr %3156, align 64, !tbaa !25
  %3158 = getelementptr inbounds nuw i8, ptr %2928, i64 4096
  %3159 = load <8 x double>, ptr %3158, align 64, !tbaa !25
  %3160 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2943, <8 x double> %3159, <8 x double> %3157)
  %3161 = getelementptr inbounds nuw i8, ptr %2928, i64 4864
  %3162 = load <8 x double>, ptr %3161, align 64, !tbaa !25
  %3163 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2949, <8 x double> %3162, <8 x double> %3160)
  %3164 = fdiv <8 x double> %3163, %2952
  %3165 = getelementptr inbounds nuw i8, ptr %2928, i64 3328
  store <8 x double> %3164, ptr %3165, align 64, !tbaa !25
  %3166 = getelementptr inbounds nuw i8, ptr %2928, i64 4160
  %3167 = load <8 x double>, ptr %3166, align 64, !tbaa !25
  %3168 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2943, <8 x double> %3167, <8 x double> %3146)
  %3169 = getelementptr inbounds nuw i8, ptr %2928, i64 4928
  %3170 = load <8 x double>, ptr %3169, align 64, !tbaa !25
  %3171 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2949, <8 x double> %3170, <8 x double> %3168)
  %3172 = fdiv <8 x double> %3171, %2952
  %3173 = getelementptr inbounds nuw i8, ptr %2928, i64 3392
  store <8 x double> %3172, ptr %3173, align 64, !tbaa !25
  %3174 = getelementptr inbounds nuw i8, ptr %2928, i64 4352
  %3175 = load <8 x double>, ptr %3174, align 64, !tbaa !25
  %3176 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2943, <8 x double> %3175, <8 x double> %3155)
  %3177 = getelementptr inbounds nuw i8, ptr %2928, i64 5120
  %3178 = load <8 x double>, ptr %3177, align 64, !tbaa !25
  %3179 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %2949, <8 x double> %3178, <8 x double> %3176)
  %3180 = fdiv <8 x double> %3179, %2952
  %3181 = getelementptr inbounds nuw i8, ptr %2928, i64 3584
  store <8 x double> %3180, ptr %3181, align 64, !tbaa !25
  %3182 = fcmp ogt <8 x double> %2926, %3144
  %3183 = select <8 x i1> %3182, <8 x double> %2926, <8 x double> %3144
  %3184 = add nuw nsw i64 %2925, 1
  %3185 = load i64, ptr %149, align 64, !tbaa !16
  %3186 = icmp slt i64 %3184, %3185
  br i1 %3186, label %2924, label %3187, !llvm.loop !115

3187:                                             ; preds = %3142, %2739
  %3188 = phi i64 [ %2743, %2739 ], [ %3185, %3142 ]
  %3189 = phi <8 x double> [ zeroinitializer, %2739 ], [ %3183, %3142 ]
  %3190 = load <8 x double>, ptr %186, align 64, !tbaa !25
  %3191 = fadd <8 x double> %3190, splat (double 1.000000e+00)
  store <8 x double> %3191, ptr %186, align 64, !tbaa !25
  %3192 = load <8 x i64>, ptr %131, align 64, !tbaa !25
  %3193 = load <8 x double>, ptr %223, align 64, !tbaa !25
  %3194 = fcmp olt <8 x double> %3189, %3193
  %3195 = load i64, ptr %224, align 8, !tbaa !23
  %3196 = sitofp i64 %3195 to double
  %3197 = insertelement <8 x double> poison, double %3196, i64 0
  %3198 = shufflevector <8 x double> %3197, <8 x double> poison, <8 x i32> zeroinitializer
  %3199 = fcmp oge <8 x double> %3191, %3198
  %3200 = or <8 x i1> %3194, %3199
  %3201 = select <8 x i1> %3200, <8 x i64> %3192, <8 x i64> zeroinitializer
  store <8 x i64> %3201, ptr %154, align 64, !tbaa !25
  %3202 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3201)
  %3203 = icmp eq i64 %3202, 0
  br i1 %3203, label %544, label %3204, !llvm.loop !54

3204:                                             ; preds = %3187
  %3205 = icmp sgt i64 %3188, 0
  br i1 %3205, label %3206, label %3208

3206:                                             ; preds = %3204
  %3207 = icmp eq <8 x i64> %3201, zeroinitializer
  br label %3538

3208:                                             ; preds = %3586, %3204
  %3209 = phi i64 [ %3188, %3204 ], [ %3592, %3586 ]
  %3210 = load <8 x double>, ptr %225, align 64, !tbaa !25
  %3211 = fadd <8 x double> %3210, splat (double 1.000000e+00)
  %3212 = icmp eq <8 x i64> %3201, zeroinitializer
  %3213 = select <8 x i1> %3212, <8 x double> %3210, <8 x double> %3211
  store <8 x double> %3213, ptr %225, align 64, !tbaa !25
  %3214 = fcmp ogt <8 x double> %3213, splat (double 4.000000e+01)
  %3215 = select <8 x i1> %3214, <8 x i64> %3201, <8 x i64> zeroinitializer
  %3216 = xor <8 x i64> %3215, %3201
  %3217 = load <8 x double>, ptr %148, align 64, !tbaa !25
  %3218 = fadd <8 x double> %3217, splat (double 1.000000e+00)
  %3219 = icmp eq <8 x i64> %3215, zeroinitializer
  %3220 = select <8 x i1> %3219, <8 x double> %3217, <8 x double> %3218
  store <8 x double> %3220, ptr %148, align 64, !tbaa !25
  %3221 = load <8 x double>, ptr %214, align 64, !tbaa !25
  %3222 = load <8 x double>, ptr %226, align 64, !tbaa !25
  %3223 = fsub <8 x double> %3221, %3222
  %3224 = tail call noundef <8 x double> @llvm.fabs.v8f64(<8 x double> %3223)
  %3225 = load <8 x double>, ptr %227, align 64, !tbaa !25
  %3226 = fmul <8 x double> %3225, splat (double 1.500000e+00)
  %3227 = fcmp ogt <8 x double> %3224, %3226
  %3228 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %3229 = fcmp ogt <8 x double> %3228, splat (double 2.000000e-03)
  %3230 = load <8 x double>, ptr %190, align 64, !tbaa !25
  %3231 = fcmp oeq <8 x double> %3230, zeroinitializer
  %3232 = and <8 x i1> %3227, %3231
  %3233 = and <8 x i1> %3229, %3232
  %3234 = fdiv <8 x double> %3225, %3224
  %3235 = select <8 x i1> %3233, <8 x i64> %3216, <8 x i64> zeroinitializer
  %3236 = load <8 x double>, ptr %164, align 64, !tbaa !25
  %3237 = icmp eq <8 x i64> %3235, zeroinitializer
  %3238 = select <8 x i1> %3237, <8 x double> %3236, <8 x double> zeroinitializer
  store <8 x double> %3238, ptr %164, align 64, !tbaa !25
  %3239 = fcmp ogt <8 x double> %3234, splat (double 5.000000e-02)
  %3240 = select <8 x i1> %3239, <8 x double> %3234, <8 x double> splat (double 5.000000e-02)
  %3241 = fcmp olt <8 x double> %3240, splat (double 0x3FEE666666666666)
  %3242 = select <8 x i1> %3241, <8 x double> %3240, <8 x double> splat (double 0x3FEE666666666666)
  %3243 = fmul <8 x double> %3228, %3242
  %3244 = fcmp ogt <8 x double> %3243, splat (double 0x3EB0C6F7A0B5ED8D)
  %3245 = select <8 x i1> %3244, <8 x double> %3243, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3246 = load <8 x double>, ptr %160, align 64, !tbaa !25
  %3247 = select <8 x i1> %3237, <8 x double> %3246, <8 x double> %3245
  store <8 x double> %3247, ptr %160, align 64, !tbaa !25
  %3248 = load <8 x double>, ptr %145, align 64, !tbaa !25
  %3249 = fadd <8 x double> %3248, splat (double 1.000000e+00)
  %3250 = select <8 x i1> %3237, <8 x double> %3248, <8 x double> %3249
  store <8 x double> %3250, ptr %145, align 64, !tbaa !25
  %3251 = xor <8 x i64> %3235, %3216
  %3252 = icmp sgt i64 %3209, 0
  br i1 %3252, label %3253, label %3395

3253:                                             ; preds = %3208
  %3254 = load ptr, ptr %150, align 8, !tbaa !27
  %3255 = fcmp ogt <8 x double> %3228, splat (double 0x3E7AD7F29ABCAF48)
  %3256 = fmul <8 x double> %3228, splat (double 3.000000e-01)
  %3257 = fcmp ogt <8 x double> %3256, splat (double 0x3EB0C6F7A0B5ED8D)
  %3258 = select <8 x i1> %3257, <8 x double> %3256, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3259 = fcmp ogt <8 x double> %3228, splat (double 1.000000e-05)
  br label %3263

3260:                                             ; preds = %3263
  %3261 = load ptr, ptr %150, align 8, !tbaa !27
  %3262 = fcmp ogt <8 x double> %3228, splat (double 1.000000e-04)
  br label %3323

3263:                                             ; preds = %3253, %3263
  %3264 = phi <8 x double> [ %3250, %3253 ], [ %3319, %3263 ]
  %3265 = phi <8 x double> [ %3247, %3253 ], [ %3317, %3263 ]
  %3266 = phi <8 x double> [ %3238, %3253 ], [ %3309, %3263 ]
  %3267 = phi i64 [ 0, %3253 ], [ %3321, %3263 ]
  %3268 = phi <8 x i64> [ %3251, %3253 ], [ %3320, %3263 ]
  %3269 = getelementptr inbounds nuw %struct.Piece, ptr %3254, i64 %3267
  %3270 = getelementptr inbounds nuw i8, ptr %3269, i64 3072
  %3271 = load <8 x double>, ptr %3270, align 64, !tbaa !25
  %3272 = getelementptr inbounds nuw i8, ptr %3269, i64 3840
  %3273 = load <8 x double>, ptr %3272, align 64, !tbaa !25
  %3274 = getelementptr inbounds nuw i8, ptr %3269, i64 7360
  %3275 = load <8 x i64>, ptr %3274, align 64, !tbaa !25
  %3276 = xor <8 x i64> %3275, splat (i64 -1)
  %3277 = getelementptr inbounds nuw i8, ptr %3269, i64 896
  %3278 = load <8 x double>, ptr %3277, align 64, !tbaa !25
  %3279 = fmul <8 x double> %3278, splat (double 1.000000e-04)
  %3280 = fcmp ogt <8 x double> %3279, splat (double 0x3E7AD7F29ABCAF48)
  %3281 = fneg <8 x double> %3279
  %3282 = select <8 x i1> %3280, <8 x double> %3281, <8 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3283 = fcmp olt <8 x double> %3271, %3282
  %3284 = select <8 x i1> %3283, <8 x i64> %3276, <8 x i64> zeroinitializer
  %3285 = fcmp ole <8 x double> %3273, zeroinitializer
  %3286 = select <8 x i1> %3285, <8 x i64> %3284, <8 x i64> zeroinitializer
  %3287 = getelementptr inbounds nuw i8, ptr %3269, i64 832
  %3288 = load <8 x double>, ptr %3287, align 64, !tbaa !25
  %3289 = fmul <8 x double> %3288, splat (double -3.000000e-07)
  %3290 = fcmp olt <8 x double> %3271, %3289
  %3291 = select <8 x i1> %3255, <8 x i1> %3290, <8 x i1> zeroinitializer
  %3292 = select <8 x i1> %3291, <8 x i64> %3286, <8 x i64> zeroinitializer
  %3293 = and <8 x i64> %3292, %3268
  %3294 = icmp eq <8 x i64> %3293, zeroinitializer
  %3295 = select <8 x i1> %3294, <8 x double> %3266, <8 x double> zeroinitializer
  %3296 = select <8 x i1> %3294, <8 x double> %3265, <8 x double> %3258
  %3297 = fadd <8 x double> %3264, splat (double 1.000000e+00)
  %3298 = select <8 x i1> %3294, <8 x double> %3264, <8 x double> %3297
  %3299 = xor <8 x i64> %3293, %3268
  %3300 = xor <8 x i64> %3286, splat (i64 -1)
  %3301 = and <8 x i64> %3284, %3300
  %3302 = select <8 x i1> %3259, <8 x i64> %3301, <8 x i64> zeroinitializer
  %3303 = fsub <8 x double> %3273, %3271
  %3304 = fdiv <8 x double> %3273, %3303
  %3305 = fcmp ogt <8 x double> %3295, %3228
  %3306 = and <8 x i64> %3299, %3302
  %3307 = icmp eq <8 x i64> %3306, zeroinitializer
  %3308 = select <8 x i1> %3307, <8 x i1> splat (i1 true), <8 x i1> %3305
  %3309 = select <8 x i1> %3308, <8 x double> %3295, <8 x double> %3228
  store <8 x double> %3309, ptr %164, align 64, !tbaa !25
  %3310 = fcmp ogt <8 x double> %3304, splat (double 5.000000e-02)
  %3311 = select <8 x i1> %3310, <8 x double> %3304, <8 x double> splat (double 5.000000e-02)
  %3312 = fcmp olt <8 x double> %3311, splat (double 0x3FEE666666666666)
  %3313 = select <8 x i1> %3312, <8 x double> %3311, <8 x double> splat (double 0x3FEE666666666666)
  %3314 = fmul <8 x double> %3228, %3313
  %3315 = fcmp ogt <8 x double> %3314, splat (double 0x3EB0C6F7A0B5ED8D)
  %3316 = select <8 x i1> %3315, <8 x double> %3314, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3317 = select <8 x i1> %3307, <8 x double> %3296, <8 x double> %3316
  store <8 x double> %3317, ptr %160, align 64, !tbaa !25
  %3318 = fadd <8 x double> %3298, splat (double 1.000000e+00)
  %3319 = select <8 x i1> %3307, <8 x double> %3298, <8 x double> %3318
  store <8 x double> %3319, ptr %145, align 64, !tbaa !25
  %3320 = xor <8 x i64> %3306, %3299
  %3321 = add nuw nsw i64 %3267, 1
  %3322 = icmp eq i64 %3321, %3209
  br i1 %3322, label %3260, label %3263, !llvm.loop !116

3323:                                             ; preds = %3260, %3323
  %3324 = phi <8 x double> [ %3319, %3260 ], [ %3391, %3323 ]
  %3325 = phi <8 x double> [ %3317, %3260 ], [ %3389, %3323 ]
  %3326 = phi <8 x double> [ %3309, %3260 ], [ %3381, %3323 ]
  %3327 = phi i64 [ 0, %3260 ], [ %3393, %3323 ]
  %3328 = phi <8 x i64> [ %3320, %3260 ], [ %3392, %3323 ]
  %3329 = getelementptr inbounds nuw %struct.Piece, ptr %3261, i64 %3327
  %3330 = getelementptr inbounds nuw i8, ptr %3329, i64 3776
  %3331 = load <8 x double>, ptr %3330, align 64, !tbaa !25
  %3332 = getelementptr inbounds nuw i8, ptr %3329, i64 3008
  %3333 = load <8 x double>, ptr %3332, align 64, !tbaa !25
  %3334 = getelementptr inbounds nuw i8, ptr %3329, i64 7296
  %3335 = load <8 x double>, ptr %3334, align 64, !tbaa !25
  %3336 = fcmp oeq <8 x double> %3335, zeroinitializer
  %3337 = getelementptr inbounds nuw i8, ptr %3329, i64 1472
  %3338 = load <8 x double>, ptr %3337, align 64, !tbaa !25
  %3339 = fmul <8 x double> %3338, splat (double 0x3FEFF7CED916872B)
  %3340 = fcmp olt <8 x double> %3333, %3339
  %3341 = and <8 x i1> %3336, %3340
  %3342 = and <8 x i1> %3262, %3341
  %3343 = fsub <8 x double> %3331, %3338
  %3344 = fsub <8 x double> %3331, %3333
  %3345 = fdiv <8 x double> %3343, %3344
  %3346 = fcmp ogt <8 x double> %3326, %3228
  %3347 = select <8 x i1> %3342, <8 x i64> %3328, <8 x i64> zeroinitializer
  %3348 = icmp eq <8 x i64> %3347, zeroinitializer
  %3349 = select <8 x i1> %3348, <8 x i1> splat (i1 true), <8 x i1> %3346
  %3350 = select <8 x i1> %3349, <8 x double> %3326, <8 x double> %3228
  store <8 x double> %3350, ptr %164, align 64, !tbaa !25
  %3351 = fcmp ogt <8 x double> %3345, splat (double 5.000000e-02)
  %3352 = select <8 x i1> %3351, <8 x double> %3345, <8 x double> splat (double 5.000000e-02)
  %3353 = fcmp olt <8 x double> %3352, splat (double 0x3FEE666666666666)
  %3354 = select <8 x i1> %3353, <8 x double> %3352, <8 x double> splat (double 0x3FEE666666666666)
  %3355 = fmul <8 x double> %3228, %3354
  %3356 = fcmp ogt <8 x double> %3355, splat (double 0x3EB0C6F7A0B5ED8D)
  %3357 = select <8 x i1> %3356, <8 x double> %3355, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3358 = select <8 x i1> %3348, <8 x double> %3325, <8 x double> %3357
  store <8 x double> %3358, ptr %160, align 64, !tbaa !25
  %3359 = fadd <8 x double> %3324, splat (double 1.000000e+00)
  %3360 = select <8 x i1> %3348, <8 x double> %3324, <8 x double> %3359
  store <8 x double> %3360, ptr %145, align 64, !tbaa !25
  %3361 = xor <8 x i64> %3347, %3328
  %3362 = load <8 x double>, ptr %3334, align 64, !tbaa !25
  %3363 = fcmp oeq <8 x double> %3362, splat (double 1.000000e+00)
  %3364 = getelementptr inbounds nuw i8, ptr %3329, i64 3264
  %3365 = load <8 x double>, ptr %3364, align 64, !tbaa !25
  %3366 = getelementptr inbounds nuw i8, ptr %3329, i64 1600
  %3367 = load <8 x double>, ptr %3366, align 64, !tbaa !25
  %3368 = fmul <8 x double> %3367, splat (double 1.000100e+00)
  %3369 = fcmp ogt <8 x double> %3365, %3368
  %3370 = and <8 x i1> %3363, %3369
  %3371 = and <8 x i1> %3262, %3370
  %3372 = getelementptr inbounds nuw i8, ptr %3329, i64 4032
  %3373 = load <8 x double>, ptr %3372, align 64, !tbaa !25
  %3374 = fsub <8 x double> %3367, %3373
  %3375 = fsub <8 x double> %3365, %3373
  %3376 = fdiv <8 x double> %3374, %3375
  %3377 = fcmp ogt <8 x double> %3350, %3228
  %3378 = select <8 x i1> %3371, <8 x i64> %3361, <8 x i64> zeroinitializer
  %3379 = icmp eq <8 x i64> %3378, zeroinitializer
  %3380 = select <8 x i1> %3379, <8 x i1> splat (i1 true), <8 x i1> %3377
  %3381 = select <8 x i1> %3380, <8 x double> %3350, <8 x double> %3228
  store <8 x double> %3381, ptr %164, align 64, !tbaa !25
  %3382 = fcmp ogt <8 x double> %3376, splat (double 5.000000e-02)
  %3383 = select <8 x i1> %3382, <8 x double> %3376, <8 x double> splat (double 5.000000e-02)
  %3384 = fcmp olt <8 x double> %3383, splat (double 0x3FEE666666666666)
  %3385 = select <8 x i1> %3384, <8 x double> %3383, <8 x double> splat (double 0x3FEE666666666666)
  %3386 = fmul <8 x double> %3228, %3385
  %3387 = fcmp ogt <8 x double> %3386, splat (double 0x3EB0C6F7A0B5ED8D)
  %3388 = select <8 x i1> %3387, <8 x double> %3386, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3389 = select <8 x i1> %3379, <8 x double> %3358, <8 x double> %3388
  store <8 x double> %3389, ptr %160, align 64, !tbaa !25
  %3390 = fadd <8 x double> %3360, splat (double 1.000000e+00)
  %3391 = select <8 x i1> %3379, <8 x double> %3360, <8 x double> %3390
  store <8 x double> %3391, ptr %145, align 64, !tbaa !25
  %3392 = xor <8 x i64> %3378, %3361
  %3393 = add nuw nsw i64 %3327, 1
  %3394 = icmp eq i64 %3393, %3209
  br i1 %3394, label %3395, label %3323, !llvm.loop !117

3395:                                             ; preds = %3323, %3208
  %3396 = phi <8 x double> [ %3250, %3208 ], [ %3391, %3323 ]
  %3397 = phi <8 x double> [ %3247, %3208 ], [ %3389, %3323 ]
  %3398 = phi <8 x double> [ %3238, %3208 ], [ %3381, %3323 ]
  %3399 = phi <8 x i64> [ %3251, %3208 ], [ %3392, %3323 ]
  %3400 = load <8 x double>, ptr %228, align 64, !tbaa !25
  %3401 = fmul <8 x double> %3400, splat (double 5.000000e-01)
  %3402 = load <8 x double>, ptr %216, align 64, !tbaa !25
  %3403 = load <8 x i64>, ptr %174, align 64, !tbaa !25
  %3404 = fneg <8 x double> %3401
  %3405 = icmp eq <8 x i64> %3403, zeroinitializer
  %3406 = select <8 x i1> %3405, <8 x double> %3404, <8 x double> %3401
  %3407 = fadd <8 x double> %3402, %3406
  %3408 = load <8 x double>, ptr %172, align 64, !tbaa !25
  %3409 = fsub <8 x double> %3408, %3407
  %3410 = load <8 x double>, ptr %171, align 64, !tbaa !25
  %3411 = fsub <8 x double> %3410, %3407
  %3412 = fneg <8 x double> %3409
  %3413 = select <8 x i1> %3405, <8 x double> %3412, <8 x double> %3409
  %3414 = fneg <8 x double> %3411
  %3415 = select <8 x i1> %3405, <8 x double> %3414, <8 x double> %3411
  %3416 = load <8 x double>, ptr %181, align 64, !tbaa !25
  %3417 = fcmp oeq <8 x double> %3416, zeroinitializer
  %3418 = load <8 x double>, ptr %180, align 64, !tbaa !25
  %3419 = fcmp oeq <8 x double> %3418, zeroinitializer
  %3420 = and <8 x i1> %3417, %3419
  %3421 = fcmp olt <8 x double> %3413, splat (double -1.000000e-03)
  %3422 = and <8 x i1> %3420, %3421
  %3423 = fcmp ogt <8 x double> %3415, splat (double 4.000000e-03)
  %3424 = and <8 x i1> %3423, %3422
  %3425 = and <8 x i1> %3229, %3424
  %3426 = fsub <8 x double> %3413, %3415
  %3427 = fdiv <8 x double> %3413, %3426
  %3428 = fcmp ogt <8 x double> %3398, %3228
  %3429 = select <8 x i1> %3425, <8 x i64> %3399, <8 x i64> zeroinitializer
  %3430 = icmp eq <8 x i64> %3429, zeroinitializer
  %3431 = select <8 x i1> %3430, <8 x i1> splat (i1 true), <8 x i1> %3428
  %3432 = select <8 x i1> %3431, <8 x double> %3398, <8 x double> %3228
  store <8 x double> %3432, ptr %164, align 64, !tbaa !25
  %3433 = fcmp ogt <8 x double> %3427, splat (double 5.000000e-02)
  %3434 = select <8 x i1> %3433, <8 x double> %3427, <8 x double> splat (double 5.000000e-02)
  %3435 = fcmp olt <8 x double> %3434, splat (double 0x3FEE666666666666)
  %3436 = select <8 x i1> %3435, <8 x double> %3434, <8 x double> splat (double 0x3FEE666666666666)
  %3437 = fmul <8 x double> %3228, %3436
  %3438 = fcmp ogt <8 x double> %3437, splat (double 0x3EB0C6F7A0B5ED8D)
  %3439 = select <8 x i1> %3438, <8 x double> %3437, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3440 = select <8 x i1> %3430, <8 x double> %3397, <8 x double> %3439
  store <8 x double> %3440, ptr %160, align 64, !tbaa !25
  %3441 = fadd <8 x double> %3396, splat (double 1.000000e+00)
  %3442 = select <8 x i1> %3430, <8 x double> %3396, <8 x double> %3441
  store <8 x double> %3442, ptr %145, align 64, !tbaa !25
  %3443 = xor <8 x i64> %3429, %3399
  %3444 = load <8 x double>, ptr %229, align 64, !tbaa !25
  %3445 = load <8 x double>, ptr %202, align 64, !tbaa !25
  %3446 = load <8 x double>, ptr %193, align 64, !tbaa !25
  %3447 = fsub <8 x double> %3445, %3446
  %3448 = load <8 x double>, ptr %230, align 64, !tbaa !25
  %3449 = fcmp une <8 x double> %3448, splat (double 1.000000e+00)
  %3450 = load <8 x double>, ptr %231, align 64, !tbaa !25
  %3451 = fsub <8 x double> %3408, %3450
  %3452 = select <8 x i1> %3449, <8 x double> splat (double -1.000000e+00), <8 x double> %3451
  %3453 = fcmp une <8 x double> %3448, splat (double 2.000000e+00)
  %3454 = fsub <8 x double> %3444, %3450
  %3455 = select <8 x i1> %3453, <8 x double> %3452, <8 x double> %3454
  %3456 = fcmp une <8 x double> %3448, splat (double 3.000000e+00)
  %3457 = fsub <8 x double> %3447, %3450
  %3458 = select <8 x i1> %3456, <8 x double> %3455, <8 x double> %3457
  %3459 = fcmp une <8 x double> %3448, splat (double 4.000000e+00)
  %3460 = fsub <8 x double> %3450, %3447
  %3461 = select <8 x i1> %3459, <8 x double> %3458, <8 x double> %3460
  br i1 %3252, label %3462, label %3494

3462:                                             ; preds = %3395
  %3463 = load ptr, ptr %150, align 8, !tbaa !27
  %3464 = and i64 %3209, 1
  %3465 = icmp eq i64 %3209, 1
  br i1 %3465, label %3484, label %3466

3466:                                             ; preds = %3462
  %3467 = and i64 %3209, 9223372036854775806
  br label %3468

3468:                                             ; preds = %3468, %3466
  %3469 = phi i64 [ 0, %3466 ], [ %3481, %3468 ]
  %3470 = phi <8 x double> [ splat (double 1.000000e+09), %3466 ], [ %3480, %3468 ]
  %3471 = phi i64 [ 0, %3466 ], [ %3482, %3468 ]
  %3472 = getelementptr inbounds nuw %struct.Piece, ptr %3463, i64 %3469, i32 35
  %3473 = load <8 x double>, ptr %3472, align 64, !tbaa !25
  %3474 = fcmp olt <8 x double> %3470, %3473
  %3475 = select <8 x i1> %3474, <8 x double> %3470, <8 x double> %3473
  %3476 = or disjoint i64 %3469, 1
  %3477 = getelementptr inbounds nuw %struct.Piece, ptr %3463, i64 %3476, i32 35
  %3478 = load <8 x double>, ptr %3477, align 64, !tbaa !25
  %3479 = fcmp olt <8 x double> %3475, %3478
  %3480 = select <8 x i1> %3479, <8 x double> %3475, <8 x double> %3478
  %3481 = add nuw nsw i64 %3469, 2
  %3482 = add i64 %3471, 2
  %3483 = icmp eq i64 %3482, %3467
  br i1 %3483, label %3484, label %3468, !llvm.loop !118

3484:                                             ; preds = %3468, %3462
  %3485 = phi <8 x double> [ poison, %3462 ], [ %3480, %3468 ]
  %3486 = phi i64 [ 0, %3462 ], [ %3481, %3468 ]
  %3487 = phi <8 x double> [ splat (double 1.000000e+09), %3462 ], [ %3480, %3468 ]
  %3488 = icmp eq i64 %3464, 0
  br i1 %3488, label %3494, label %3489

3489:                                             ; preds = %3484
  %3490 = getelementptr inbounds nuw %struct.Piece, ptr %3463, i64 %3486, i32 35
  %3491 = load <8 x double>, ptr %3490, align 64, !tbaa !25
  %3492 = fcmp olt <8 x double> %3487, %3491
  %3493 = select <8 x i1> %3492, <8 x double> %3487, <8 x double> %3491
  br label %3494

3494:                                             ; preds = %3489, %3484, %3395
  %3495 = phi <8 x double> [ splat (double 1.000000e+09), %3395 ], [ %3485, %3484 ], [ %3493, %3489 ]
  %3496 = load <8 x double>, ptr %194, align 64, !tbaa !25
  %3497 = fsub <8 x double> %3496, %3446
  %3498 = fsub <8 x double> %3410, %3450
  %3499 = select <8 x i1> %3449, <8 x double> splat (double -1.000000e+00), <8 x double> %3498
  %3500 = fsub <8 x double> %3495, %3450
  %3501 = select <8 x i1> %3453, <8 x double> %3499, <8 x double> %3500
  %3502 = fsub <8 x double> %3497, %3450
  %3503 = select <8 x i1> %3456, <8 x double> %3501, <8 x double> %3502
  %3504 = fsub <8 x double> %3450, %3497
  %3505 = select <8 x i1> %3459, <8 x double> %3503, <8 x double> %3504
  %3506 = fcmp une <8 x double> %3448, zeroinitializer
  %3507 = fcmp oge <8 x double> %3228, splat (double 5.000000e-02)
  %3508 = and <8 x i1> %3507, %3506
  %3509 = fcmp olt <8 x double> %3461, zeroinitializer
  %3510 = and <8 x i1> %3508, %3509
  %3511 = fsub <8 x double> %3505, %3461
  %3512 = fmul <8 x double> %3511, splat (double 2.000000e-02)
  %3513 = fcmp ogt <8 x double> %3505, %3512
  %3514 = and <8 x i1> %3510, %3513
  %3515 = fsub <8 x double> %3461, %3505
  %3516 = fdiv <8 x double> %3461, %3515
  %3517 = fcmp olt <8 x double> %3516, splat (double 0x3FEE666666666666)
  %3518 = and <8 x i1> %3517, %3514
  %3519 = fcmp ogt <8 x double> %3432, %3228
  %3520 = select <8 x i1> %3518, <8 x i64> %3443, <8 x i64> zeroinitializer
  %3521 = icmp eq <8 x i64> %3520, zeroinitializer
  %3522 = select <8 x i1> %3521, <8 x i1> splat (i1 true), <8 x i1> %3519
  %3523 = select <8 x i1> %3522, <8 x double> %3432, <8 x double> %3228
  store <8 x double> %3523, ptr %164, align 64, !tbaa !25
  %3524 = fcmp ogt <8 x double> %3516, splat (double 5.000000e-02)
  %3525 = select <8 x i1> %3524, <8 x double> %3516, <8 x double> splat (double 5.000000e-02)
  %3526 = fcmp olt <8 x double> %3525, splat (double 0x3FEE666666666666)
  %3527 = select <8 x i1> %3526, <8 x double> %3525, <8 x double> splat (double 0x3FEE666666666666)
  %3528 = fmul <8 x double> %3228, %3527
  %3529 = fcmp ogt <8 x double> %3528, splat (double 0x3EB0C6F7A0B5ED8D)
  %3530 = select <8 x i1> %3529, <8 x double> %3528, <8 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3531 = select <8 x i1> %3521, <8 x double> %3440, <8 x double> %3530
  store <8 x double> %3531, ptr %160, align 64, !tbaa !25
  %3532 = fadd <8 x double> %3442, splat (double 1.000000e+00)
  %3533 = select <8 x i1> %3521, <8 x double> %3442, <8 x double> %3532
  store <8 x double> %3533, ptr %145, align 64, !tbaa !25
  %3534 = xor <8 x i64> %3520, %3443
  %3535 = or <8 x i64> %3534, %3215
  %3536 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3535)
  %3537 = icmp eq i64 %3536, 0
  br i1 %3537, label %544, label %3594

3538:                                             ; preds = %3206, %3586
  %3539 = phi i64 [ 0, %3206 ], [ %3591, %3586 ]
  %3540 = load ptr, ptr %150, align 8, !tbaa !27
  %3541 = getelementptr inbounds nuw %struct.Piece, ptr %3540, i64 %3539
  %3542 = getelementptr inbounds nuw i8, ptr %3541, i64 7560
  %3543 = load ptr, ptr %3542, align 8, !tbaa !58
  %3544 = load <8 x double>, ptr %3543, align 64, !tbaa !25
  %3545 = getelementptr inbounds nuw i8, ptr %3541, i64 1344
  %3546 = load <8 x double>, ptr %3545, align 64, !tbaa !25
  %3547 = getelementptr inbounds nuw i8, ptr %3543, i64 64
  %3548 = load <8 x double>, ptr %3547, align 64, !tbaa !25
  %3549 = fsub <8 x double> %3548, %3544
  %3550 = fneg <8 x double> %3546
  %3551 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3550, <8 x double> %3549, <8 x double> %3544)
  %3552 = getelementptr inbounds nuw i8, ptr %3541, i64 7552
  %3553 = load i64, ptr %3552, align 64, !tbaa !30
  %3554 = icmp eq i64 %3553, 0
  br i1 %3554, label %3586, label %3555

3555:                                             ; preds = %3538
  %3556 = getelementptr <8 x double>, ptr %3543, i64 %3553
  %3557 = getelementptr i8, ptr %3556, i64 -64
  %3558 = load <8 x double>, ptr %3557, align 64, !tbaa !25
  %3559 = load <8 x double>, ptr %3556, align 64, !tbaa !25
  %3560 = getelementptr inbounds nuw i8, ptr %3541, i64 2880
  %3561 = load <8 x double>, ptr %3560, align 64, !tbaa !25
  %3562 = getelementptr inbounds nuw i8, ptr %3541, i64 2944
  %3563 = load <8 x double>, ptr %3562, align 64, !tbaa !25
  %3564 = getelementptr inbounds nuw i8, ptr %3541, i64 64
  %3565 = load <8 x double>, ptr %3564, align 64, !tbaa !25
  %3566 = fsub <8 x double> %3563, %3565
  %3567 = fmul <8 x double> %3561, %3566
  %3568 = getelementptr inbounds nuw i8, ptr %3541, i64 576
  %3569 = load <8 x double>, ptr %3568, align 64, !tbaa !25
  %3570 = getelementptr inbounds nuw i8, ptr %3541, i64 2816
  %3571 = load <8 x double>, ptr %3570, align 64, !tbaa !25
  %3572 = fdiv <8 x double> %3569, %3571
  %3573 = getelementptr inbounds nuw i8, ptr %3541, i64 192
  %3574 = load <8 x double>, ptr %3573, align 64, !tbaa !25
  %3575 = getelementptr inbounds nuw i8, ptr %3541, i64 256
  %3576 = load <8 x double>, ptr %3575, align 64, !tbaa !25
  %3577 = getelementptr inbounds nuw i8, ptr %3541, i64 320
  %3578 = load <8 x double>, ptr %3577, align 64, !tbaa !25
  %3579 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3559, <8 x double> %3578, <8 x double> %3576)
  %3580 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3559, <8 x double> %3579, <8 x double> %3574)
  %3581 = fdiv <8 x double> %3580, %3567
  %3582 = fmul <8 x double> %3559, %3581
  %3583 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3572, <8 x double> %3558, <8 x double> %3582)
  %3584 = fadd <8 x double> %3572, %3581
  %3585 = fdiv <8 x double> %3583, %3584
  br label %3586

3586:                                             ; preds = %3538, %3555
  %3587 = phi <8 x double> [ %3585, %3555 ], [ %3551, %3538 ]
  %3588 = getelementptr inbounds nuw i8, ptr %3541, i64 7232
  %3589 = load <8 x double>, ptr %3588, align 64, !tbaa !25
  %3590 = select <8 x i1> %3207, <8 x double> %3589, <8 x double> %3587
  store <8 x double> %3590, ptr %3588, align 64, !tbaa !25
  %3591 = add nuw nsw i64 %3539, 1
  %3592 = load i64, ptr %149, align 64, !tbaa !16
  %3593 = icmp slt i64 %3591, %3592
  br i1 %3593, label %3538, label %3208, !llvm.loop !119

3594:                                             ; preds = %3494
  %3595 = icmp eq <8 x i64> %3535, zeroinitializer
  %3596 = select <8 x i1> %3595, <8 x double> %3222, <8 x double> %3221
  store <8 x double> %3596, ptr %226, align 64, !tbaa !25
  %3597 = load <8 x double>, ptr %173, align 64, !tbaa !25
  %3598 = select <8 x i1> %3595, <8 x double> %3597, <8 x double> %3408
  store <8 x double> %3598, ptr %173, align 64, !tbaa !25
  %3599 = select <8 x i1> %3595, <8 x double> %3408, <8 x double> %3410
  store <8 x double> %3599, ptr %172, align 64, !tbaa !25
  %3600 = load <8 x double>, ptr %258, align 64, !tbaa !25
  %3601 = select <8 x i1> %3595, <8 x double> %3600, <8 x double> %3445
  store <8 x double> %3601, ptr %258, align 64, !tbaa !25
  %3602 = select <8 x i1> %3595, <8 x double> %3445, <8 x double> %3496
  store <8 x double> %3602, ptr %259, align 64, !tbaa !25
  %3603 = load <8 x double>, ptr %261, align 64, !tbaa !25
  %3604 = load <8 x double>, ptr %260, align 64, !tbaa !25
  %3605 = select <8 x i1> %3595, <8 x double> %3604, <8 x double> %3603
  store <8 x double> %3605, ptr %260, align 64, !tbaa !25
  %3606 = load <8 x double>, ptr %262, align 64, !tbaa !25
  %3607 = select <8 x i1> %3595, <8 x double> %3603, <8 x double> %3606
  store <8 x double> %3607, ptr %261, align 64, !tbaa !25
  %3608 = load <8 x double>, ptr %264, align 64, !tbaa !25
  %3609 = load <8 x double>, ptr %263, align 64, !tbaa !25
  %3610 = select <8 x i1> %3595, <8 x double> %3609, <8 x double> %3608
  store <8 x double> %3610, ptr %263, align 64, !tbaa !25
  %3611 = load <8 x double>, ptr %265, align 64, !tbaa !25
  %3612 = select <8 x i1> %3595, <8 x double> %3608, <8 x double> %3611
  store <8 x double> %3612, ptr %264, align 64, !tbaa !25
  %3613 = load <8 x double>, ptr %267, align 64, !tbaa !25
  %3614 = load <8 x double>, ptr %266, align 64, !tbaa !25
  %3615 = select <8 x i1> %3595, <8 x double> %3614, <8 x double> %3613
  store <8 x double> %3615, ptr %266, align 64, !tbaa !25
  %3616 = load <8 x double>, ptr %268, align 64, !tbaa !25
  %3617 = select <8 x i1> %3595, <8 x double> %3613, <8 x double> %3616
  store <8 x double> %3617, ptr %267, align 64, !tbaa !25
  %3618 = load <8 x double>, ptr %270, align 64, !tbaa !25
  %3619 = load <8 x double>, ptr %269, align 64, !tbaa !25
  %3620 = select <8 x i1> %3595, <8 x double> %3619, <8 x double> %3618
  store <8 x double> %3620, ptr %269, align 64, !tbaa !25
  %3621 = load <8 x double>, ptr %271, align 64, !tbaa !25
  %3622 = select <8 x i1> %3595, <8 x double> %3618, <8 x double> %3621
  store <8 x double> %3622, ptr %270, align 64, !tbaa !25
  %3623 = xor <8 x i64> %3535, splat (i64 -1)
  br i1 %3252, label %3624, label %3999

3624:                                             ; preds = %3594, %3964
  %3625 = phi i64 [ %3976, %3964 ], [ 0, %3594 ]
  %3626 = load ptr, ptr %150, align 8, !tbaa !27
  %3627 = getelementptr inbounds nuw %struct.Piece, ptr %3626, i64 %3625
  %3628 = getelementptr inbounds nuw i8, ptr %3627, i64 1664
  %3629 = load <8 x double>, ptr %3628, align 64, !tbaa !25
  %3630 = fcmp ogt <8 x double> %3629, zeroinitializer
  %3631 = bitcast <8 x i1> %3630 to i8
  %3632 = icmp eq i8 %3631, 0
  %3633 = load i64, ptr %140, align 8, !tbaa !20
  br i1 %3632, label %3891, label %3634

3634:                                             ; preds = %3624
  %3635 = add i64 %3633, -1
  %3636 = getelementptr inbounds nuw i8, ptr %3627, i64 4416
  %3637 = load <8 x double>, ptr %3636, align 64, !tbaa !25
  %3638 = getelementptr inbounds nuw i8, ptr %3627, i64 3648
  %3639 = load <8 x double>, ptr %3638, align 64, !tbaa !25
  %3640 = getelementptr inbounds nuw i8, ptr %3627, i64 7552
  %3641 = load i64, ptr %3640, align 64, !tbaa !30
  %3642 = icmp sgt i64 %3633, %3641
  br i1 %3642, label %3651, label %3643

3643:                                             ; preds = %3634
  %3644 = getelementptr inbounds nuw i8, ptr %3627, i64 7648
  %3645 = load ptr, ptr %3644, align 32, !tbaa !71
  %3646 = getelementptr inbounds <8 x double>, ptr %3645, i64 %3635
  %3647 = load <8 x double>, ptr %3646, align 64, !tbaa !25
  %3648 = getelementptr inbounds nuw i8, ptr %3627, i64 1536
  %3649 = load <8 x double>, ptr %3648, align 64, !tbaa !25
  %3650 = fmul <8 x double> %3647, %3649
  br label %3660

3651:                                             ; preds = %3634
  %3652 = getelementptr inbounds nuw i8, ptr %3627, i64 1536
  %3653 = load <8 x double>, ptr %3652, align 64, !tbaa !25
  %3654 = getelementptr inbounds nuw i8, ptr %3627, i64 7648
  %3655 = load ptr, ptr %3654, align 32, !tbaa !71
  %3656 = getelementptr inbounds <8 x double>, ptr %3655, i64 %3635
  %3657 = load <8 x double>, ptr %3656, align 64, !tbaa !25
  %3658 = fsub <8 x double> %3637, %3653
  %3659 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3657, <8 x double> %3658, <8 x double> %3653)
  br label %3660

3660:                                             ; preds = %3651, %3643
  %3661 = phi <8 x double> [ %3649, %3643 ], [ %3653, %3651 ]
  %3662 = phi <8 x double> [ %3650, %3643 ], [ %3659, %3651 ]
  %3663 = getelementptr inbounds nuw i8, ptr %3627, i64 3008
  %3664 = load <8 x double>, ptr %3663, align 64, !tbaa !25
  %3665 = fcmp ole <8 x double> %3662, %3664
  %3666 = getelementptr inbounds nuw i8, ptr %3627, i64 7296
  %3667 = load <8 x double>, ptr %3666, align 64, !tbaa !25
  %3668 = fcmp oeq <8 x double> %3667, zeroinitializer
  %3669 = select <8 x i1> %3668, <8 x i1> %3665, <8 x i1> zeroinitializer
  %3670 = select <8 x i1> %3669, <8 x i64> %3535, <8 x i64> zeroinitializer
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %12) #7
  %3671 = xor <8 x i64> %3670, %3535
  store <8 x i64> %3671, ptr %12, align 64, !tbaa !25
  %3672 = fsub <8 x double> %3637, %3639
  %3673 = getelementptr inbounds nuw i8, ptr %3627, i64 1536
  %3674 = fsub <8 x double> %3639, %3661
  %3675 = fdiv <8 x double> %3672, %3674
  %3676 = getelementptr inbounds nuw i8, ptr %3627, i64 7592
  %3677 = load ptr, ptr %3676, align 8, !tbaa !61
  %3678 = getelementptr inbounds <8 x double>, ptr %3677, i64 %3641
  %3679 = load <8 x double>, ptr %3678, align 64, !tbaa !25
  %3680 = getelementptr inbounds nuw i8, ptr %3627, i64 7600
  %3681 = load ptr, ptr %3680, align 16, !tbaa !47
  %3682 = getelementptr inbounds <8 x double>, ptr %3681, i64 %3641
  %3683 = load <8 x double>, ptr %3682, align 64, !tbaa !25
  %3684 = icmp eq <8 x i64> %3670, zeroinitializer
  %3685 = select <8 x i1> %3684, <8 x double> %3683, <8 x double> %3679
  store <8 x double> %3685, ptr %3682, align 64, !tbaa !25
  %3686 = load i64, ptr %3640, align 64, !tbaa !30
  %3687 = add nsw i64 %3686, 1
  %3688 = icmp slt i64 %3687, %3635
  br i1 %3688, label %3689, label %3693

3689:                                             ; preds = %3660
  %3690 = getelementptr inbounds nuw i8, ptr %3627, i64 7664
  br label %3733

3691:                                             ; preds = %3733
  %3692 = load i64, ptr %3640, align 64, !tbaa !30
  br label %3693

3693:                                             ; preds = %3691, %3660
  %3694 = phi i64 [ %3686, %3660 ], [ %3692, %3691 ]
  %3695 = phi <8 x double> [ %3679, %3660 ], [ %3738, %3691 ]
  %3696 = icmp sgt i64 %3633, %3694
  br i1 %3696, label %3704, label %3697

3697:                                             ; preds = %3693
  %3698 = getelementptr inbounds nuw i8, ptr %3627, i64 7648
  %3699 = load ptr, ptr %3698, align 32, !tbaa !71
  %3700 = getelementptr inbounds <8 x double>, ptr %3699, i64 %3635
  %3701 = load <8 x double>, ptr %3700, align 64, !tbaa !25
  %3702 = load <8 x double>, ptr %3673, align 64, !tbaa !25
  %3703 = fmul <8 x double> %3701, %3702
  br label %3712

3704:                                             ; preds = %3693
  %3705 = load <8 x double>, ptr %3673, align 64, !tbaa !25
  %3706 = getelementptr inbounds nuw i8, ptr %3627, i64 7648
  %3707 = load ptr, ptr %3706, align 32, !tbaa !71
  %3708 = getelementptr inbounds <8 x double>, ptr %3707, i64 %3635
  %3709 = load <8 x double>, ptr %3708, align 64, !tbaa !25
  %3710 = fsub <8 x double> %3639, %3705
  %3711 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3709, <8 x double> %3710, <8 x double> %3705)
  br label %3712

3712:                                             ; preds = %3704, %3697
  %3713 = phi <8 x double> [ %3703, %3697 ], [ %3711, %3704 ]
  %3714 = load ptr, ptr %3676, align 8, !tbaa !61
  %3715 = getelementptr inbounds <8 x double>, ptr %3714, i64 %3635
  %3716 = load <8 x double>, ptr %3715, align 64, !tbaa !25
  %3717 = load ptr, ptr %3680, align 16, !tbaa !47
  %3718 = getelementptr inbounds <8 x double>, ptr %3717, i64 %3635
  %3719 = fsub <8 x double> %3695, %3716
  %3720 = fsub <8 x double> %3662, %3713
  %3721 = load <8 x double>, ptr %3663, align 64, !tbaa !25
  %3722 = fsub <8 x double> %3721, %3713
  %3723 = fdiv <8 x double> %3720, %3722
  %3724 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3719, <8 x double> %3723, <8 x double> %3716)
  %3725 = load <8 x double>, ptr %3718, align 64, !tbaa !25
  %3726 = select <8 x i1> %3684, <8 x double> %3725, <8 x double> %3724
  store <8 x double> %3726, ptr %3718, align 64, !tbaa !25
  %3727 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %3671)
  %3728 = icmp eq i64 %3727, 0
  br i1 %3728, label %3889, label %3729

3729:                                             ; preds = %3712
  %3730 = getelementptr inbounds nuw i8, ptr %3627, i64 7648
  %3731 = getelementptr inbounds nuw i8, ptr %3627, i64 3136
  %3732 = getelementptr inbounds nuw i8, ptr %3627, i64 832
  br label %3751

3733:                                             ; preds = %3689, %3733
  %3734 = phi i64 [ %3687, %3689 ], [ %3749, %3733 ]
  %3735 = phi <8 x double> [ %3679, %3689 ], [ %3738, %3733 ]
  %3736 = load ptr, ptr %3676, align 8, !tbaa !61
  %3737 = getelementptr inbounds <8 x double>, ptr %3736, i64 %3734
  %3738 = load <8 x double>, ptr %3737, align 64, !tbaa !25
  %3739 = load ptr, ptr %3680, align 16, !tbaa !47
  %3740 = getelementptr inbounds <8 x double>, ptr %3739, i64 %3734
  %3741 = fsub <8 x double> %3735, %3738
  %3742 = load ptr, ptr %3690, align 16, !tbaa !120
  %3743 = getelementptr inbounds <8 x double>, ptr %3742, i64 %3734
  %3744 = load <8 x double>, ptr %3743, align 64, !tbaa !25
  %3745 = fmul <8 x double> %3675, %3744
  %3746 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %3741, <8 x double> %3745, <8 x double> %3738)
  %3747 = load <8 x double>, ptr %3740, align 64, !tbaa !25
  %3748 = select <8 x i1> %3684, <8 x double> %3747, <8 x double> %3746
  store <8 x double> %3748, ptr %3740, align 64, !tbaa !25
  %3749 = add nsw i64 %3734, 1
  %3750 = icmp eq i64 %3749, %3635
  br i1 %3750, label %3691, label %3733, !llvm.loop !121

3751:                                             ; preds = %3729, %3886
  %3752 = phi i64 [ 0, %3729 ], [ %3887, %3886 ]
  %3753 = getelementptr inbounds nuw i64, ptr %12, i64 %3752
  %3754 = load i64, ptr %3753, align 8, !tbaa !29
  %3755 = icmp eq i64 %3754, 0
  br i1 %3755, label %3886, label %3756

3756:                                             ; preds = %3751
  %3757 = load i64, ptr %140, align 8, !tbaa !20
  %3758 = load i64, ptr %3640, align 64, !tbaa !30
  %3759 = getelementptr inbounds nuw double, ptr %3673, i64 %3752
  %3760 = load double, ptr %3759, align 8, !tbaa !42
  %3761 = getelementptr inbounds nuw double, ptr %3663, i64 %3752
  %3762 = load double, ptr %3761, align 8, !tbaa !42
  %3763 = add nsw i64 %3757, -1
  %3764 = icmp sgt i64 %3757, %3758
  br i1 %3764, label %3765, label %3886

3765:                                             ; preds = %3756
  %3766 = getelementptr inbounds nuw double, ptr %3638, i64 %3752
  %3767 = load double, ptr %3766, align 8, !tbaa !42
  %3768 = getelementptr inbounds nuw double, ptr %3636, i64 %3752
  %3769 = load double, ptr %3768, align 8, !tbaa !42
  %3770 = load ptr, ptr %3730, align 32
  %3771 = getelementptr i8, ptr %3770, i64 64
  %3772 = getelementptr double, ptr %3771, i64 %3752
  %3773 = fsub double %3767, %3760
  %3774 = getelementptr double, ptr %3770, i64 %3752
  %3775 = fsub double %3769, %3760
  %3776 = load ptr, ptr %3676, align 8, !tbaa !61
  %3777 = getelementptr double, ptr %3776, i64 %3752
  %3778 = load ptr, ptr %3680, align 16, !tbaa !47
  %3779 = getelementptr double, ptr %3778, i64 %3752
  %3780 = getelementptr <8 x double>, ptr %3774, i64 %3763
  br label %3808

3781:                                             ; preds = %3854
  %3782 = getelementptr inbounds nuw double, ptr %3666, i64 %3752
  %3783 = load double, ptr %3782, align 8, !tbaa !42
  %3784 = fcmp ogt double %3783, 0.000000e+00
  %3785 = fcmp ogt double %3865, 0.000000e+00
  %3786 = select i1 %3784, i1 %3785, i1 false
  br i1 %3786, label %3787, label %3886

3787:                                             ; preds = %3781
  %3788 = getelementptr inbounds nuw double, ptr %3731, i64 %3752
  %3789 = getelementptr inbounds nuw double, ptr %3732, i64 %3752
  %3790 = sub i64 %3757, %3758
  %3791 = add i64 %3758, 1
  %3792 = and i64 %3790, 1
  %3793 = icmp eq i64 %3792, 0
  br i1 %3793, label %3803, label %3794

3794:                                             ; preds = %3787
  %3795 = load double, ptr %3788, align 8, !tbaa !42
  %3796 = load double, ptr %3789, align 8, !tbaa !42
  %3797 = fmul double %3865, %3796
  %3798 = fdiv double %3795, %3797
  %3799 = getelementptr <8 x double>, ptr %3779, i64 %3758
  %3800 = load double, ptr %3799, align 8, !tbaa !42
  %3801 = fmul double %3800, %3798
  store double %3801, ptr %3799, align 8, !tbaa !42
  %3802 = add nsw i64 %3758, 1
  br label %3803

3803:                                             ; preds = %3794, %3787
  %3804 = phi i64 [ %3758, %3787 ], [ %3802, %3794 ]
  %3805 = icmp eq i64 %3757, %3791
  br i1 %3805, label %3886, label %3806

3806:                                             ; preds = %3803
  %3807 = getelementptr i8, ptr %3779, i64 64
  br label %3868

3808:                                             ; preds = %3854, %3765
  %3809 = phi double [ 0.000000e+00, %3765 ], [ %3865, %3854 ]
  %3810 = phi i64 [ %3763, %3765 ], [ %3866, %3854 ]
  %3811 = icmp eq i64 %3810, %3763
  br i1 %3811, label %3812, label %3815

3812:                                             ; preds = %3808
  %3813 = load double, ptr %3780, align 8, !tbaa !42
  %3814 = tail call noundef double @llvm.fmuladd.f64(double %3813, double %3773, double %3760)
  br label %3826

3815:                                             ; preds = %3808
  %3816 = getelementptr <8 x double>, ptr %3772, i64 %3810
  %3817 = load double, ptr %3816, align 8, !tbaa !42
  %3818 = tail call noundef double @llvm.fmuladd.f64(double %3817, double %3773, double %3760)
  %3819 = getelementptr <8 x double>, ptr %3774, i64 %3810
  %3820 = load double, ptr %3819, align 8, !tbaa !42
  %3821 = tail call noundef double @llvm.fmuladd.f64(double %3820, double %3773, double %3760)
  %3822 = tail call noundef double @llvm.fmuladd.f64(double %3817, double %3775, double %3760)
  %3823 = fcmp ult double %3822, %3818
  br i1 %3823, label %3824, label %3826

3824:                                             ; preds = %3815
  %3825 = add nsw i64 %3810, 1
  br label %3826

3826:                                             ; preds = %3824, %3815, %3812
  %3827 = phi double [ %3821, %3824 ], [ %3821, %3815 ], [ %3814, %3812 ]
  %3828 = phi double [ %3818, %3824 ], [ %3818, %3815 ], [ %3762, %3812 ]
  %3829 = phi i64 [ %3825, %3824 ], [ %3810, %3815 ], [ %3763, %3812 ]
  %3830 = icmp sgt i64 %3829, %3758
  br i1 %3830, label %3831, label %3854

3831:                                             ; preds = %3826
  %3832 = load ptr, ptr %3676, align 8
  %3833 = getelementptr double, ptr %3832, i64 %3752
  br label %3834

3834:                                             ; preds = %3849, %3831
  %3835 = phi i64 [ %3829, %3831 ], [ %3852, %3849 ]
  %3836 = phi double [ 0.000000e+00, %3831 ], [ %3851, %3849 ]
  %3837 = phi double [ %3828, %3831 ], [ %3850, %3849 ]
  %3838 = getelementptr <8 x double>, ptr %3774, i64 %3835
  %3839 = load double, ptr %3838, align 8, !tbaa !42
  %3840 = tail call noundef double @llvm.fmuladd.f64(double %3839, double %3775, double %3760)
  %3841 = fcmp ogt double %3840, %3827
  br i1 %3841, label %3842, label %3854

3842:                                             ; preds = %3834
  %3843 = fcmp ogt double %3837, %3840
  br i1 %3843, label %3844, label %3849

3844:                                             ; preds = %3842
  %3845 = getelementptr <8 x double>, ptr %3833, i64 %3835
  %3846 = load double, ptr %3845, align 8, !tbaa !42
  %3847 = fsub double %3837, %3840
  %3848 = tail call double @llvm.fmuladd.f64(double %3846, double %3847, double %3836)
  br label %3849

3849:                                             ; preds = %3844, %3842
  %3850 = phi double [ %3840, %3844 ], [ %3837, %3842 ]
  %3851 = phi double [ %3848, %3844 ], [ %3836, %3842 ]
  %3852 = add nsw i64 %3835, -1
  %3853 = icmp sgt i64 %3852, %3758
  br i1 %3853, label %3834, label %3854, !llvm.loop !122

3854:                                             ; preds = %3849, %3834, %3826
  %3855 = phi double [ %3828, %3826 ], [ %3837, %3834 ], [ %3850, %3849 ]
  %3856 = phi double [ 0.000000e+00, %3826 ], [ %3836, %3834 ], [ %3851, %3849 ]
  %3857 = phi i64 [ %3829, %3826 ], [ %3835, %3834 ], [ %3758, %3849 ]
  %3858 = getelementptr <8 x double>, ptr %3777, i64 %3857
  %3859 = load double, ptr %3858, align 8, !tbaa !42
  %3860 = fsub double %3855, %3827
  %3861 = tail call double @llvm.fmuladd.f64(double %3859, double %3860, double %3856)
  %3862 = fsub double %3828, %3827
  %3863 = fdiv double %3861, %3862
  %3864 = getelementptr <8 x double>, ptr %3779, i64 %3810
  store double %3863, ptr %3864, align 8, !tbaa !42
  %3865 = fadd double %3809, %3861
  %3866 = add nsw i64 %3810, -1
  %3867 = icmp sgt i64 %3810, %3758
  br i1 %3867, label %3808, label %3781, !llvm.loop !123

3868:                                             ; preds = %3868, %3806
  %3869 = phi i64 [ %3804, %3806 ], [ %3884, %3868 ]
  %3870 = load double, ptr %3788, align 8, !tbaa !42
  %3871 = load double, ptr %3789, align 8, !tbaa !42
  %3872 = fmul double %3865, %3871
  %3873 = fdiv double %3870, %3872
  %3874 = getelementptr <8 x double>, ptr %3779, i64 %3869
  %3875 = load double, ptr %3874, align 8, !tbaa !42
  %3876 = fmul double %3875, %3873
  store double %3876, ptr %3874, align 8, !tbaa !42
  %3877 = load double, ptr %3788, align 8, !tbaa !42
  %3878 = load double, ptr %3789, align 8, !tbaa !42
  %3879 = fmul double %3865, %3878
  %3880 = fdiv double %3877, %3879
  %3881 = getelementptr <8 x double>, ptr %3807, i64 %3869
  %3882 = load double, ptr %3881, align 8, !tbaa !42
  %3883 = fmul double %3882, %3880
  store double %3883, ptr %3881, align 8, !tbaa !42
  %3884 = add nsw i64 %3869, 2
  %3885 = icmp eq i64 %3884, %3757
  br i1 %3885, label %3886, label %3868, !llvm.loop !124

3886:                                             ; preds = %3803, %3868, %3781, %3756, %3751
  %3887 = add nuw nsw i64 %3752, 1
  %3888 = icmp eq i64 %3887, 8
  br i1 %3888, label %3889, label %3751, !llvm.loop !125

3889:                                             ; preds = %3886, %3712
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %12) #7
  %3890 = load i64, ptr %140, align 8, !tbaa !20
  br label %3891

3891:                                             ; preds = %3624, %3889
  %3892 = phi i64 [ %3633, %3624 ], [ %3890, %3889 ]
  %3893 = icmp sgt i64 %3892, 0
  br i1 %3893, label %3894, label %3898

3894:                                             ; preds = %3891
  %3895 = getelementptr inbounds nuw i8, ptr %3627, i64 7576
  %3896 = getelementptr inbounds nuw i8, ptr %3627, i64 7568
  %3897 = getelementptr inbounds nuw i8, ptr %3627, i64 7560
  br label %3908

3898:                                             ; preds = %3908, %3891
  %3899 = load i64, ptr %141, align 16, !tbaa !21
  %3900 = icmp sgt i64 %3899, 0
  br i1 %3900, label %3901, label %3927

3901:                                             ; preds = %3898
  %3902 = getelementptr inbounds nuw i8, ptr %3627, i64 7744
  %3903 = getelementptr inbounds nuw i8, ptr %3627, i64 7736
  %3904 = getelementptr inbounds nuw i8, ptr %3627, i64 7728
  %3905 = getelementptr inbounds nuw i8, ptr %3627, i64 7696
  %3906 = getelementptr inbounds nuw i8, ptr %3627, i64 7688
  %3907 = getelementptr inbounds nuw i8, ptr %3627, i64 7680
  br label %3931

3908:                                             ; preds = %3894, %3908
  %3909 = phi i64 [ 0, %3894 ], [ %3924, %3908 ]
  %3910 = load ptr, ptr %3895, align 8, !tbaa !57
  %3911 = getelementptr inbounds nuw <8 x double>, ptr %3910, i64 %3909
  %3912 = load ptr, ptr %3896, align 16, !tbaa !46
  %3913 = getelementptr inbounds nuw <8 x double>, ptr %3912, i64 %3909
  %3914 = load <8 x double>, ptr %3913, align 64, !tbaa !25
  %3915 = load <8 x double>, ptr %3911, align 64, !tbaa !25
  %3916 = select <8 x i1> %3595, <8 x double> %3915, <8 x double> %3914
  store <8 x double> %3916, ptr %3911, align 64, !tbaa !25
  %3917 = load ptr, ptr %3896, align 16, !tbaa !46
  %3918 = getelementptr inbounds nuw <8 x double>, ptr %3917, i64 %3909
  %3919 = load ptr, ptr %3897, align 8, !tbaa !58
  %3920 = getelementptr inbounds nuw <8 x double>, ptr %3919, i64 %3909
  %3921 = load <8 x double>, ptr %3920, align 64, !tbaa !25
  %3922 = load <8 x double>, ptr %3918, align 64, !tbaa !25
  %3923 = select <8 x i1> %3595, <8 x double> %3922, <8 x double> %3921
  store <8 x double> %3923, ptr %3918, align 64, !tbaa !25
  %3924 = add nuw nsw i64 %3909, 1
  %3925 = load i64, ptr %140, align 8, !tbaa !20
  %3926 = icmp slt i64 %3924, %3925
  br i1 %3926, label %3908, label %3898, !llvm.loop !126

3927:                                             ; preds = %3931, %3898
  %3928 = getelementptr inbounds nuw i8, ptr %3627, i64 4480
  %3929 = getelementptr inbounds nuw i8, ptr %3627, i64 3712
  %3930 = getelementptr inbounds nuw i8, ptr %3627, i64 2944
  br label %3979

3931:                                             ; preds = %3901, %3931
  %3932 = phi i64 [ 0, %3901 ], [ %3961, %3931 ]
  %3933 = load ptr, ptr %3902, align 64, !tbaa !64
  %3934 = getelementptr inbounds nuw <8 x double>, ptr %3933, i64 %3932
  %3935 = load ptr, ptr %3903, align 8, !tbaa !49
  %3936 = getelementptr inbounds nuw <8 x double>, ptr %3935, i64 %3932
  %3937 = load <8 x double>, ptr %3936, align 64, !tbaa !25
  %3938 = load <8 x double>, ptr %3934, align 64, !tbaa !25
  %3939 = select <8 x i1> %3595, <8 x double> %3938, <8 x double> %3937
  store <8 x double> %3939, ptr %3934, align 64, !tbaa !25
  %3940 = load ptr, ptr %3903, align 8, !tbaa !49
  %3941 = getelementptr inbounds nuw <8 x double>, ptr %3940, i64 %3932
  %3942 = load ptr, ptr %3904, align 16, !tbaa !78
  %3943 = getelementptr inbounds nuw <8 x double>, ptr %3942, i64 %3932
  %3944 = load <8 x double>, ptr %3943, align 64, !tbaa !25
  %3945 = load <8 x double>, ptr %3941, align 64, !tbaa !25
  %3946 = select <8 x i1> %3595, <8 x double> %3945, <8 x double> %3944
  store <8 x double> %3946, ptr %3941, align 64, !tbaa !25
  %3947 = load ptr, ptr %3905, align 16, !tbaa !65
  %3948 = getelementptr inbounds nuw <8 x double>, ptr %3947, i64 %3932
  %3949 = load ptr, ptr %3906, align 8, !tbaa !50
  %3950 = getelementptr inbounds nuw <8 x double>, ptr %3949, i64 %3932
  %3951 = load <8 x double>, ptr %3950, align 64, !tbaa !25
  %3952 = load <8 x double>, ptr %3948, align 64, !tbaa !25
  %3953 = select <8 x i1> %3595, <8 x double> %3952, <8 x double> %3951
  store <8 x double> %3953, ptr %3948, align 64, !tbaa !25
  %3954 = load ptr, ptr %3906, align 8, !tbaa !50
  %3955 = getelementptr inbounds nuw <8 x double>, ptr %3954, i64 %3932
  %3956 = load ptr, ptr %3907, align 64, !tbaa !109
  %3957 = getelementptr inbounds nuw <8 x double>, ptr %3956, i64 %3932
  %3958 = load <8 x double>, ptr %3957, align 64, !tbaa !25
  %3959 = load <8 x double>, ptr %3955, align 64, !tbaa !25
  %3960 = select <8 x i1> %3595, <8 x double> %3959, <8 x double> %3958
  store <8 x double> %3960, ptr %3955, align 64, !tbaa !25
  %3961 = add nuw nsw i64 %3932, 1
  %3962 = load i64, ptr %141, align 16, !tbaa !21
  %3963 = icmp slt i64 %3961, %3962
  br i1 %3963, label %3931, label %3927, !llvm.loop !127

3964:                                             ; preds = %3979
  %3965 = getelementptr inbounds nuw i8, ptr %3627, i64 7424
  %3966 = getelementptr inbounds nuw i8, ptr %3627, i64 5696
  %3967 = load <8 x double>, ptr %3966, align 64, !tbaa !25
  %3968 = fcmp ogt <8 x double> %3967, zeroinitializer
  %3969 = load <8 x double>, ptr %159, align 64, !tbaa !25
  %3970 = fcmp une <8 x double> %3969, splat (double 2.000000e+00)
  %3971 = and <8 x i1> %3968, %3970
  %3972 = select <8 x i1> %3971, <8 x i64> %3535, <8 x i64> zeroinitializer
  %3973 = load <8 x i64>, ptr %3965, align 64, !tbaa !25
  %3974 = and <8 x i64> %3973, %3623
  %3975 = or <8 x i64> %3972, %3974
  store <8 x i64> %3975, ptr %3965, align 64, !tbaa !25
  %3976 = add nuw nsw i64 %3625, 1
  %3977 = load i64, ptr %149, align 64, !tbaa !16
  %3978 = icmp slt i64 %3976, %3977
  br i1 %3978, label %3624, label %3991, !llvm.loop !128

3979:                                             ; preds = %3927, %3979
  %3980 = phi i64 [ 0, %3927 ], [ %3989, %3979 ]
  %3981 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3928, i64 0, i64 %3980
  %3982 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3929, i64 0, i64 %3980
  %3983 = load <8 x double>, ptr %3982, align 64, !tbaa !25
  %3984 = load <8 x double>, ptr %3981, align 64, !tbaa !25
  %3985 = select <8 x i1> %3595, <8 x double> %3984, <8 x double> %3983
  store <8 x double> %3985, ptr %3981, align 64, !tbaa !25
  %3986 = getelementptr inbounds nuw [12 x <8 x double>], ptr %3930, i64 0, i64 %3980
  %3987 = load <8 x double>, ptr %3986, align 64, !tbaa !25
  %3988 = select <8 x i1> %3595, <8 x double> %3983, <8 x double> %3987
  store <8 x double> %3988, ptr %3982, align 64, !tbaa !25
  %3989 = add nuw nsw i64 %3980, 1
  %3990 = icmp eq i64 %3989, 12
  br i1 %3990, label %3964, label %3979, !llvm.loop !129

3991:                                             ; preds = %3964
  %3992 = load <8 x double>, ptr %166, align 64, !tbaa !25
  %3993 = load <8 x double>, ptr %190, align 64, !tbaa !25
  %3994 = load <8 x double>, ptr %227, align 64, !tbaa !25
  %3995 = load <8 x double>, ptr %164, align 64, !tbaa !25
  %3996 = load <8 x double>, ptr %225, align 64, !tbaa !25
  %3997 = fdiv <8 x double> %3994, %3224
  %3998 = icmp sgt i64 %3977, 0
  br label %3999

3999:                                             ; preds = %3594, %3991
  %4000 = phi <8 x double> [ %3997, %3991 ], [ %3234, %3594 ]
  %4001 = phi i1 [ %3998, %3991 ], [ false, %3594 ]
  %4002 = phi <8 x double> [ %3996, %3991 ], [ %3213, %3594 ]
  %4003 = phi <8 x double> [ %3995, %3991 ], [ %3523, %3594 ]
  %4004 = phi <8 x double> [ %3993, %3991 ], [ %3230, %3594 ]
  %4005 = phi <8 x double> [ %3992, %3991 ], [ %3228, %3594 ]
  %4006 = load <8 x double>, ptr %157, align 64, !tbaa !25
  %4007 = fadd <8 x double> %4006, %4005
  %4008 = select <8 x i1> %3595, <8 x double> %4006, <8 x double> %4007
  store <8 x double> %4008, ptr %157, align 64, !tbaa !25
  %4009 = load <8 x double>, ptr %165, align 64, !tbaa !25
  %4010 = select <8 x i1> %3595, <8 x double> %4009, <8 x double> %4005
  store <8 x double> %4010, ptr %165, align 64, !tbaa !25
  %4011 = load <8 x double>, ptr %144, align 64, !tbaa !25
  %4012 = fadd <8 x double> %4011, splat (double 1.000000e+00)
  %4013 = select <8 x i1> %3595, <8 x double> %4011, <8 x double> %4012
  store <8 x double> %4013, ptr %144, align 64, !tbaa !25
  %4014 = load <8 x double>, ptr %146, align 64, !tbaa !25
  %4015 = fcmp olt <8 x double> %4014, %4005
  %4016 = select <8 x i1> %3595, <8 x i1> splat (i1 true), <8 x i1> %4015
  %4017 = select <8 x i1> %4016, <8 x double> %4014, <8 x double> %4005
  store <8 x double> %4017, ptr %146, align 64, !tbaa !25
  %4018 = fcmp une <8 x double> %4004, zeroinitializer
  %4019 = fcmp ueq <8 x double> %3223, zeroinitializer
  %4020 = or <8 x i1> %4019, %4018
  %4021 = fcmp olt <8 x double> %4000, splat (double 1.800000e+00)
  %4022 = select <8 x i1> %4021, <8 x double> %4000, <8 x double> splat (double 1.800000e+00)
  %4023 = select <8 x i1> %4020, <8 x double> splat (double 1.800000e+00), <8 x double> %4022
  %4024 = fcmp ogt <8 x double> %4023, splat (double 2.000000e-01)
  %4025 = select <8 x i1> %4024, <8 x double> %4023, <8 x double> splat (double 2.000000e-01)
  %4026 = fmul <8 x double> %4005, %4025
  %4027 = fmul <8 x double> %4005, splat (double 4.000000e+00)
  %4028 = fcmp olt <8 x double> %4003, %4027
  %4029 = select <8 x i1> %4028, <8 x double> %4003, <8 x double> %4027
  %4030 = fcmp ogt <8 x double> %4026, %4029
  %4031 = select <8 x i1> %4030, <8 x double> %4026, <8 x double> %4029
  %4032 = select <8 x i1> %3595, <8 x double> %4003, <8 x double> zeroinitializer
  store <8 x double> %4032, ptr %164, align 64, !tbaa !25
  %4033 = select <8 x i1> %3595, <8 x double> %4002, <8 x double> zeroinitializer
  store <8 x double> %4033, ptr %225, align 64, !tbaa !25
  %4034 = load <8 x i64>, ptr %167, align 64, !tbaa !25
  %4035 = and <8 x i64> %4034, %3623
  store <8 x i64> %4035, ptr %167, align 64, !tbaa !25
  br i1 %4001, label %4036, label %4333

4036:                                             ; preds = %3999, %4326
  %4037 = phi i64 [ %4328, %4326 ], [ 0, %3999 ]
  %4038 = phi <8 x double> [ %4327, %4326 ], [ %4031, %3999 ]
  %4039 = load ptr, ptr %150, align 8, !tbaa !27
  %4040 = getelementptr inbounds nuw %struct.Piece, ptr %4039, i64 %4037
  %4041 = getelementptr inbounds nuw i8, ptr %4040, i64 3776
  %4042 = load <8 x double>, ptr %4041, align 64, !tbaa !25
  %4043 = getelementptr inbounds nuw i8, ptr %4040, i64 1472
  %4044 = load <8 x double>, ptr %4043, align 64, !tbaa !25
  %4045 = fmul <8 x double> %4044, splat (double 1.001000e+00)
  %4046 = fcmp ole <8 x double> %4042, %4045
  %4047 = getelementptr inbounds nuw i8, ptr %4040, i64 1600
  %4048 = load <8 x double>, ptr %4047, align 64, !tbaa !25
  %4049 = getelementptr inbounds nuw i8, ptr %4040, i64 4032
  %4050 = load <8 x double>, ptr %4049, align 64, !tbaa !25
  %4051 = fsub <8 x double> %4048, %4050
  %4052 = fmul <8 x double> %4048, splat (double 1.000000e-04)
  %4053 = fcmp ole <8 x double> %4051, %4052
  %4054 = getelementptr inbounds nuw i8, ptr %4040, i64 7360
  %4055 = load <8 x i64>, ptr %4054, align 64, !tbaa !25
  %4056 = and <8 x i64> %4055, %3535
  %4057 = getelementptr inbounds nuw i8, ptr %4040, i64 7296
  %4058 = load <8 x double>, ptr %4057, align 64, !tbaa !25
  %4059 = fcmp oeq <8 x double> %4058, zeroinitializer
  %4060 = and <8 x i1> %4046, %4059
  %4061 = fcmp oeq <8 x double> %4058, splat (double 1.000000e+00)
  %4062 = and <8 x i1> %4053, %4061
  %4063 = or <8 x i1> %4060, %4062
  %4064 = select <8 x i1> %4063, <8 x i64> %4056, <8 x i64> zeroinitializer
  %4065 = fadd <8 x double> %4058, splat (double 1.000000e+00)
  %4066 = icmp eq <8 x i64> %4064, zeroinitializer
  %4067 = select <8 x i1> %4066, <8 x double> %4058, <8 x double> %4065
  store <8 x double> %4067, ptr %4057, align 64, !tbaa !25
  %4068 = getelementptr inbounds nuw i8, ptr %4040, i64 7424
  %4069 = load <8 x i64>, ptr %4068, align 64, !tbaa !25
  %4070 = or <8 x i64> %4064, %4069
  store <8 x i64> %4070, ptr %4068, align 64, !tbaa !25
  %4071 = getelementptr inbounds nuw i8, ptr %4040, i64 896
  %4072 = load <8 x double>, ptr %4071, align 64, !tbaa !25
  %4073 = getelementptr inbounds nuw i8, ptr %4040, i64 5632
  %4074 = load <8 x double>, ptr %4073, align 64, !tbaa !25
  %4075 = getelementptr inbounds nuw i8, ptr %4040, i64 5696
  %4076 = load <8 x double>, ptr %4075, align 64, !tbaa !25
  %4077 = fadd <8 x double> %4074, %4076
  %4078 = fcmp ogt <8 x double> %4077, zeroinitializer
  %4079 = xor <8 x i64> %4055, splat (i64 -1)
  %4080 = and <8 x i64> %3535, %4079
  %4081 = fcmp une <8 x double> %4072, zeroinitializer
  %4082 = or <8 x i1> %4081, %4078
  %4083 = getelementptr inbounds nuw i8, ptr %4040, i64 3840
  %4084 = load <8 x double>, ptr %4083, align 64, !tbaa !25
  %4085 = fmul <8 x double> %4072, splat (double 1.000000e-04)
  %4086 = fcmp ogt <8 x double> %4085, splat (double 0x3E7AD7F29ABCAF48)
  %4087 = select <8 x i1> %4086, <8 x double> %4085, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4088 = fcmp ole <8 x double> %4084, %4087
  %4089 = select <8 x i1> %4088, <8 x i1> %4082, <8 x i1> zeroinitializer
  %4090 = select <8 x i1> %4089, <8 x i64> %4080, <8 x i64> zeroinitializer
  %4091 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4090)
  %4092 = icmp eq i64 %4091, 0
  br i1 %4092, label %4326, label %4093

4093:                                             ; preds = %4036
  %4094 = load i64, ptr %140, align 8, !tbaa !20
  %4095 = load i64, ptr %141, align 16, !tbaa !21
  %4096 = getelementptr inbounds nuw i8, ptr %4040, i64 4416
  %4097 = load <8 x double>, ptr %4096, align 64, !tbaa !25
  %4098 = getelementptr inbounds nuw i8, ptr %4040, i64 5568
  %4099 = load <8 x double>, ptr %4098, align 64, !tbaa !25
  %4100 = getelementptr inbounds nuw i8, ptr %4040, i64 832
  %4101 = load <8 x double>, ptr %4100, align 64, !tbaa !25
  %4102 = getelementptr inbounds nuw i8, ptr %4040, i64 7600
  %4103 = load ptr, ptr %4102, align 16, !tbaa !47
  %4104 = add nsw i64 %4094, -1
  %4105 = getelementptr inbounds <8 x double>, ptr %4103, i64 %4104
  %4106 = load <8 x double>, ptr %4105, align 64, !tbaa !25
  %4107 = fmul <8 x double> %4101, %4106
  %4108 = fneg <8 x double> %4084
  %4109 = fdiv <8 x double> %4108, %4107
  %4110 = fcmp ogt <8 x double> %4109, splat (double 0x3E7AD7F29ABCAF48)
  %4111 = select <8 x i1> %4110, <8 x double> %4109, <8 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4112 = load <8 x double>, ptr %4040, align 64, !tbaa !25
  %4113 = fsub <8 x double> %4112, %4111
  %4114 = getelementptr inbounds nuw i8, ptr %4040, i64 2560
  %4115 = load <8 x double>, ptr %4114, align 64, !tbaa !25
  %4116 = getelementptr inbounds nuw i8, ptr %4040, i64 2624
  %4117 = load <8 x double>, ptr %4116, align 64, !tbaa !25
  %4118 = getelementptr inbounds nuw i8, ptr %4040, i64 2688
  %4119 = load <8 x double>, ptr %4118, align 64, !tbaa !25
  %4120 = getelementptr inbounds nuw i8, ptr %4040, i64 2752
  %4121 = load <8 x double>, ptr %4120, align 64, !tbaa !25
  %4122 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4113, <8 x double> %4121, <8 x double> %4119)
  %4123 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4113, <8 x double> %4122, <8 x double> %4117)
  %4124 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4113, <8 x double> %4123, <8 x double> %4115)
  %4125 = getelementptr inbounds nuw i8, ptr %4040, i64 7568
  %4126 = load ptr, ptr %4125, align 16, !tbaa !46
  %4127 = getelementptr inbounds <8 x double>, ptr %4126, i64 %4104
  %4128 = load <8 x double>, ptr %4127, align 64, !tbaa !25
  %4129 = getelementptr inbounds nuw i8, ptr %4040, i64 7552
  %4130 = load i64, ptr %4129, align 64, !tbaa !30
  %4131 = icmp sgt i64 %4094, %4130
  br i1 %4131, label %4135, label %4132

4132:                                             ; preds = %4093
  %4133 = getelementptr inbounds nuw i8, ptr %4040, i64 640
  %4134 = load <8 x double>, ptr %4133, align 64, !tbaa !25
  br label %4146

4135:                                             ; preds = %4093
  %4136 = getelementptr inbounds nuw i8, ptr %4040, i64 384
  %4137 = load <8 x double>, ptr %4136, align 64, !tbaa !25
  %4138 = getelementptr inbounds nuw i8, ptr %4040, i64 448
  %4139 = load <8 x double>, ptr %4138, align 64, !tbaa !25
  %4140 = getelementptr inbounds nuw i8, ptr %4040, i64 512
  %4141 = load <8 x double>, ptr %4140, align 64, !tbaa !25
  %4142 = fmul <8 x double> %4128, %4141
  %4143 = fmul <8 x double> %4142, splat (double 0x3FD5555555555555)
  %4144 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4139, <8 x double> splat (double 5.000000e-01), <8 x double> %4143)
  %4145 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4128, <8 x double> %4144, <8 x double> %4137)
  br label %4146

4146:                                             ; preds = %4135, %4132
  %4147 = phi <8 x double> [ %4134, %4132 ], [ %4145, %4135 ]
  %4148 = fmul <8 x double> %4128, %4147
  %4149 = icmp sgt i64 %4094, 0
  br i1 %4149, label %4150, label %4160

4150:                                             ; preds = %4146
  %4151 = getelementptr inbounds nuw i8, ptr %4040, i64 640
  %4152 = getelementptr inbounds nuw i8, ptr %4040, i64 384
  %4153 = getelementptr inbounds nuw i8, ptr %4040, i64 448
  %4154 = getelementptr inbounds nuw i8, ptr %4040, i64 512
  %4155 = getelementptr inbounds nuw i8, ptr %4040, i64 1536
  %4156 = getelementptr inbounds nuw i8, ptr %4040, i64 7648
  %4157 = icmp eq <8 x i64> %4090, zeroinitializer
  br label %4172

4158:                                             ; preds = %4251
  %4159 = load <8 x double>, ptr %4040, align 64, !tbaa !25
  br label %4160

4160:                                             ; preds = %4158, %4146
  %4161 = phi <8 x double> [ %4159, %4158 ], [ %4112, %4146 ]
  %4162 = fsub <8 x double> %4161, %4113
  %4163 = sitofp i64 %4095 to double
  %4164 = insertelement <8 x double> poison, double %4163, i64 0
  %4165 = shufflevector <8 x double> %4164, <8 x double> poison, <8 x i32> zeroinitializer
  %4166 = fdiv <8 x double> %4162, %4165
  %4167 = icmp sgt i64 %4095, 0
  br i1 %4167, label %4168, label %4282

4168:                                             ; preds = %4160
  %4169 = getelementptr inbounds nuw i8, ptr %4040, i64 7736
  %4170 = icmp eq <8 x i64> %4090, zeroinitializer
  %4171 = getelementptr inbounds nuw i8, ptr %4040, i64 7688
  br label %4259

4172:                                             ; preds = %4150, %4251
  %4173 = phi <8 x double> [ %4128, %4150 ], [ %4221, %4251 ]
  %4174 = phi <8 x double> [ %4148, %4150 ], [ %4222, %4251 ]
  %4175 = phi <8 x double> [ %4124, %4150 ], [ %4220, %4251 ]
  %4176 = phi i64 [ %4104, %4150 ], [ %4257, %4251 ]
  %4177 = icmp eq i64 %4176, 0
  br i1 %4177, label %4219, label %4178

4178:                                             ; preds = %4172
  %4179 = load ptr, ptr %4125, align 16, !tbaa !46
  %4180 = getelementptr <8 x double>, ptr %4179, i64 %4176
  %4181 = getelementptr i8, ptr %4180, i64 -64
  %4182 = load <8 x double>, ptr %4181, align 64, !tbaa !25
  %4183 = load i64, ptr %4129, align 64, !tbaa !30
  %4184 = icmp sgt i64 %4176, %4183
  br i1 %4184, label %4187, label %4185

4185:                                             ; preds = %4178
  %4186 = load <8 x double>, ptr %4151, align 64, !tbaa !25
  br label %4195

4187:                                             ; preds = %4178
  %4188 = load <8 x double>, ptr %4152, align 64, !tbaa !25
  %4189 = load <8 x double>, ptr %4153, align 64, !tbaa !25
  %4190 = load <8 x double>, ptr %4154, align 64, !tbaa !25
  %4191 = fmul <8 x double> %4182, %4190
  %4192 = fmul <8 x double> %4191, splat (double 0x3FD5555555555555)
  %4193 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4189, <8 x double> splat (double 5.000000e-01), <8 x double> %4192)
  %4194 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4182, <8 x double> %4193, <8 x double> %4188)
  br label %4195

4195:                                             ; preds = %4185, %4187
  %4196 = phi <8 x double> [ %4194, %4187 ], [ %4186, %4185 ]
  %4197 = fmul <8 x double> %4182, %4196
  %4198 = icmp slt i64 %4176, %4183
  br i1 %4198, label %4199, label %4206

4199:                                             ; preds = %4195
  %4200 = load ptr, ptr %4156, align 32, !tbaa !71
  %4201 = getelementptr inbounds nuw <8 x double>, ptr %4200, i64 %4176
  %4202 = load <8 x double>, ptr %4201, align 64, !tbaa !25
  %4203 = load <8 x double>, ptr %4155, align 64, !tbaa !25
  %4204 = fmul <8 x double> %4202, %4203
  %4205 = fmul <8 x double> %4202, %4203
  br label %4215

4206:                                             ; preds = %4195
  %4207 = load <8 x double>, ptr %4155, align 64, !tbaa !25
  %4208 = load ptr, ptr %4156, align 32, !tbaa !71
  %4209 = getelementptr inbounds nuw <8 x double>, ptr %4208, i64 %4176
  %4210 = load <8 x double>, ptr %4209, align 64, !tbaa !25
  %4211 = fsub <8 x double> %4124, %4207
  %4212 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4210, <8 x double> %4211, <8 x double> %4207)
  %4213 = fsub <8 x double> %4097, %4207
  %4214 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4210, <8 x double> %4213, <8 x double> %4207)
  br label %4215

4215:                                             ; preds = %4206, %4199
  %4216 = phi <8 x double> [ %4204, %4199 ], [ %4212, %4206 ]
  %4217 = phi <8 x double> [ %4205, %4199 ], [ %4214, %4206 ]
  %4218 = fsub <8 x double> %4217, %4216
  br label %4219

4219:                                             ; preds = %4172, %4215
  %4220 = phi <8 x double> [ %4216, %4215 ], [ zeroinitializer, %4172 ]
  %4221 = phi <8 x double> [ %4182, %4215 ], [ %4173, %4172 ]
  %4222 = phi <8 x double> [ %4197, %4215 ], [ %4174, %4172 ]
  %4223 = phi <8 x double> [ %4218, %4215 ], [ zeroinitializer, %4172 ]
  %4224 = fsub <8 x double> %4175, %4220
  %4225 = fdiv <8 x double> %4223, %4224
  %4226 = fsub <8 x double> %4222, %4174
  %4227 = fmul <8 x double> %4226, %4225
  %4228 = load ptr, ptr %4102, align 16, !tbaa !47
  %4229 = getelementptr inbounds nuw <8 x double>, ptr %4228, i64 %4176
  %4230 = load <8 x double>, ptr %4229, align 64, !tbaa !25
  br i1 %4177, label %4234, label %4231

4231:                                             ; preds = %4219
  %4232 = getelementptr i8, ptr %4229, i64 -64
  %4233 = load <8 x double>, ptr %4232, align 64, !tbaa !25
  br label %4234

4234:                                             ; preds = %4231, %4219
  %4235 = phi <8 x double> [ %4233, %4231 ], [ %4230, %4219 ]
  %4236 = fsub <8 x double> %4235, %4230
  %4237 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4236, <8 x double> %4225, <8 x double> %4230)
  %4238 = select <8 x i1> %4157, <8 x double> %4230, <8 x double> %4237
  store <8 x double> %4238, ptr %4229, align 64, !tbaa !25
  %4239 = load ptr, ptr %4125, align 16, !tbaa !46
  %4240 = getelementptr inbounds nuw <8 x double>, ptr %4239, i64 %4176
  %4241 = load i64, ptr %4129, align 64, !tbaa !30
  %4242 = icmp slt i64 %4176, %4241
  br i1 %4242, label %4243, label %4245

4243:                                             ; preds = %4234
  %4244 = load <8 x double>, ptr %4151, align 64, !tbaa !25
  br label %4251

4245:                                             ; preds = %4234
  %4246 = load <8 x double>, ptr %4152, align 64, !tbaa !25
  %4247 = load <8 x double>, ptr %4153, align 64, !tbaa !25
  %4248 = load <8 x double>, ptr %4154, align 64, !tbaa !25
  %4249 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4173, <8 x double> %4248, <8 x double> %4247)
  %4250 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4173, <8 x double> %4249, <8 x double> %4246)
  br label %4251

4251:                                             ; preds = %4245, %4243
  %4252 = phi <8 x double> [ %4244, %4243 ], [ %4250, %4245 ]
  %4253 = fdiv <8 x double> %4227, %4252
  %4254 = fadd <8 x double> %4173, %4253
  %4255 = load <8 x double>, ptr %4240, align 64, !tbaa !25
  %4256 = select <8 x i1> %4157, <8 x double> %4255, <8 x double> %4254
  store <8 x double> %4256, ptr %4240, align 64, !tbaa !25
  %4257 = add nsw i64 %4176, -1
  %4258 = icmp sgt i64 %4176, 0
  br i1 %4258, label %4172, label %4158, !llvm.loop !130

4259:                                             ; preds = %4168, %4259
  %4260 = phi i64 [ 0, %4168 ], [ %4280, %4259 ]
  %4261 = load ptr, ptr %4169, align 8, !tbaa !49
  %4262 = getelementptr inbounds nuw <8 x double>, ptr %4261, i64 %4260
  %4263 = uitofp nneg i64 %4260 to double
  %4264 = insertelement <8 x double> poison, double %4263, i64 0
  %4265 = shufflevector <8 x double> %4264, <8 x double> poison, <8 x i32> zeroinitializer
  %4266 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4265, <8 x double> %4166, <8 x double> %4113)
  %4267 = load <8 x double>, ptr %4114, align 64, !tbaa !25
  %4268 = load <8 x double>, ptr %4116, align 64, !tbaa !25
  %4269 = load <8 x double>, ptr %4118, align 64, !tbaa !25
  %4270 = load <8 x double>, ptr %4120, align 64, !tbaa !25
  %4271 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4266, <8 x double> %4270, <8 x double> %4269)
  %4272 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4266, <8 x double> %4271, <8 x double> %4268)
  %4273 = tail call noundef <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4266, <8 x double> %4272, <8 x double> %4267)
  %4274 = load <8 x double>, ptr %4262, align 64, !tbaa !25
  %4275 = select <8 x i1> %4170, <8 x double> %4274, <8 x double> %4273
  store <8 x double> %4275, ptr %4262, align 64, !tbaa !25
  %4276 = load ptr, ptr %4171, align 8, !tbaa !50
  %4277 = getelementptr inbounds nuw <8 x double>, ptr %4276, i64 %4260
  %4278 = load <8 x double>, ptr %4277, align 64, !tbaa !25
  %4279 = select <8 x i1> %4170, <8 x double> %4278, <8 x double> %4099
  store <8 x double> %4279, ptr %4277, align 64, !tbaa !25
  %4280 = add nuw nsw i64 %4260, 1
  %4281 = icmp eq i64 %4280, %4095
  br i1 %4281, label %4282, label %4259, !llvm.loop !131

4282:                                             ; preds = %4259, %4160
  %4283 = fsub <8 x double> %4097, %4124
  %4284 = getelementptr inbounds nuw i8, ptr %4040, i64 3712
  %4285 = getelementptr inbounds nuw i8, ptr %4040, i64 7736
  %4286 = load ptr, ptr %4285, align 8, !tbaa !49
  %4287 = getelementptr inbounds <8 x double>, ptr %4286, i64 %4095
  %4288 = getelementptr inbounds nuw i8, ptr %4040, i64 1408
  %4289 = load <8 x double>, ptr %4288, align 64, !tbaa !25
  %4290 = load <8 x double>, ptr %4287, align 64, !tbaa !25
  %4291 = icmp eq <8 x i64> %4090, zeroinitializer
  %4292 = select <8 x i1> %4291, <8 x double> %4290, <8 x double> %4289
  store <8 x double> %4292, ptr %4287, align 64, !tbaa !25
  %4293 = load <8 x double>, ptr %4284, align 64, !tbaa !25
  %4294 = select <8 x i1> %4291, <8 x double> %4293, <8 x double> %4113
  store <8 x double> %4294, ptr %4284, align 64, !tbaa !25
  %4295 = load <8 x double>, ptr %4041, align 64, !tbaa !25
  %4296 = select <8 x i1> %4291, <8 x double> %4295, <8 x double> %4124
  store <8 x double> %4296, ptr %4041, align 64, !tbaa !25
  %4297 = load <8 x double>, ptr %4096, align 64, !tbaa !25
  %4298 = select <8 x i1> %4291, <8 x double> %4297, <8 x double> %4124
  store <8 x double> %4298, ptr %4096, align 64, !tbaa !25
  %4299 = getelementptr inbounds nuw i8, ptr %4040, i64 3904
  %4300 = load <8 x double>, ptr %4299, align 64, !tbaa !25
  %4301 = fneg <8 x double> %4283
  %4302 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4301, <8 x double> %4107, <8 x double> %4300)
  %4303 = select <8 x i1> %4291, <8 x double> %4300, <8 x double> %4302
  store <8 x double> %4303, ptr %4299, align 64, !tbaa !25
  %4304 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4283, <8 x double> %4107, <8 x double> %4084)
  %4305 = load <8 x double>, ptr %4083, align 64, !tbaa !25
  %4306 = select <8 x i1> %4291, <8 x double> %4305, <8 x double> %4304
  store <8 x double> %4306, ptr %4083, align 64, !tbaa !25
  %4307 = getelementptr inbounds nuw i8, ptr %4040, i64 4160
  %4308 = load <8 x double>, ptr %4307, align 64, !tbaa !25
  %4309 = getelementptr inbounds nuw i8, ptr %4040, i64 768
  %4310 = load <8 x double>, ptr %4309, align 64, !tbaa !25
  %4311 = fneg <8 x double> %4310
  %4312 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4311, <8 x double> %4099, <8 x double> %4148)
  %4313 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4283, <8 x double> %4312, <8 x double> %4308)
  %4314 = select <8 x i1> %4291, <8 x double> %4308, <8 x double> %4313
  store <8 x double> %4314, ptr %4307, align 64, !tbaa !25
  %4315 = load <8 x i64>, ptr %4054, align 64, !tbaa !25
  %4316 = or <8 x i64> %4315, %4090
  store <8 x i64> %4316, ptr %4054, align 64, !tbaa !25
  %4317 = load <8 x i64>, ptr %4068, align 64, !tbaa !25
  %4318 = or <8 x i64> %4317, %4090
  store <8 x i64> %4318, ptr %4068, align 64, !tbaa !25
  %4319 = load <8 x double>, ptr %232, align 64, !tbaa !25
  %4320 = fmul <8 x double> %4319, splat (double 5.000000e+00)
  %4321 = fcmp olt <8 x double> %4038, %4320
  %4322 = select <8 x i1> %4321, <8 x double> %4038, <8 x double> %4320
  %4323 = icmp ne <8 x i64> %4090, zeroinitializer
  %4324 = select <8 x i1> %4081, <8 x i1> %4323, <8 x i1> zeroinitializer
  %4325 = select <8 x i1> %4324, <8 x double> %4322, <8 x double> %4038
  br label %4326

4326:                                             ; preds = %4282, %4036
  %4327 = phi <8 x double> [ %4325, %4282 ], [ %4038, %4036 ]
  %4328 = add nuw nsw i64 %4037, 1
  %4329 = load i64, ptr %149, align 64, !tbaa !16
  %4330 = icmp slt i64 %4328, %4329
  br i1 %4330, label %4036, label %4331, !llvm.loop !132

4331:                                             ; preds = %4326
  %4332 = load <8 x double>, ptr %157, align 64, !tbaa !25
  br label %4333

4333:                                             ; preds = %4331, %3999
  %4334 = phi <8 x double> [ %4008, %3999 ], [ %4332, %4331 ]
  %4335 = phi <8 x double> [ %4031, %3999 ], [ %4327, %4331 ]
  %4336 = load <8 x double>, ptr %160, align 64, !tbaa !25
  %4337 = select <8 x i1> %3595, <8 x double> %4336, <8 x double> %4335
  store <8 x double> %4337, ptr %160, align 64, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 64, ptr nonnull %13)
  store <8 x i64> %3535, ptr %13, align 64, !tbaa !25
  %4338 = load ptr, ptr %233, align 64, !tbaa !37
  %4339 = getelementptr inbounds nuw i8, ptr %4338, i64 64
  store <8 x double> %4334, ptr %4338, align 64, !tbaa !25
  %4340 = load <8 x double>, ptr %234, align 64, !tbaa !25
  %4341 = getelementptr inbounds nuw i8, ptr %4338, i64 128
  store <8 x double> %4340, ptr %4339, align 64, !tbaa !25
  %4342 = load <8 x double>, ptr %202, align 64, !tbaa !25
  %4343 = getelementptr inbounds nuw i8, ptr %4338, i64 192
  store <8 x double> %4342, ptr %4341, align 64, !tbaa !25
  %4344 = load <8 x double>, ptr %172, align 64, !tbaa !25
  %4345 = getelementptr inbounds nuw i8, ptr %4338, i64 256
  store <8 x double> %4344, ptr %4343, align 64, !tbaa !25
  %4346 = load i64, ptr %149, align 64, !tbaa !16
  %4347 = icmp sgt i64 %4346, 0
  br i1 %4347, label %4352, label %4348

4348:                                             ; preds = %4352, %4333
  %4349 = phi ptr [ %4345, %4333 ], [ %4358, %4352 ]
  %4350 = load i64, ptr %235, align 8, !tbaa !133
  %4351 = icmp eq i64 %4350, 0
  br i1 %4351, label %4487, label %4362

4352:                                             ; preds = %4333, %4352
  %4353 = phi ptr [ %4358, %4352 ], [ %4345, %4333 ]
  %4354 = phi i64 [ %4359, %4352 ], [ 0, %4333 ]
  %4355 = load ptr, ptr %150, align 8, !tbaa !27
  %4356 = getelementptr inbounds nuw %struct.Piece, ptr %4355, i64 %4354, i32 35
  %4357 = load <8 x double>, ptr %4356, align 64, !tbaa !25
  %4358 = getelementptr inbounds nuw i8, ptr %4353, i64 64
  store <8 x double> %4357, ptr %4353, align 64, !tbaa !25
  %4359 = add nuw nsw i64 %4354, 1
  %4360 = load i64, ptr %149, align 64, !tbaa !16
  %4361 = icmp slt i64 %4359, %4360
  br i1 %4361, label %4352, label %4348, !llvm.loop !134

4362:                                             ; preds = %4348
  %4363 = load <8 x double>, ptr %217, align 64, !tbaa !25
  %4364 = getelementptr inbounds nuw i8, ptr %4349, i64 64
  store <8 x double> %4363, ptr %4349, align 64, !tbaa !25
  %4365 = load <8 x double>, ptr %195, align 64, !tbaa !25
  %4366 = getelementptr inbounds nuw i8, ptr %4349, i64 128
  store <8 x double> %4365, ptr %4364, align 64, !tbaa !25
  %4367 = load <8 x double>, ptr %202, align 64, !tbaa !25
  %4368 = load <8 x double>, ptr %212, align 64, !tbaa !25
  %4369 = fsub <8 x double> %4367, %4368
  %4370 = fcmp ogt <8 x double> %4369, zeroinitializer
  %4371 = select <8 x i1> %4370, <8 x double> %4369, <8 x double> zeroinitializer
  store <8 x double> %4371, ptr %4366, align 64, !tbaa !25
  %4372 = load i64, ptr %149, align 64, !tbaa !16
  %4373 = icmp sgt i64 %4372, 0
  br i1 %4373, label %4374, label %4487

4374:                                             ; preds = %4362
  %4375 = getelementptr inbounds nuw i8, ptr %4349, i64 192
  br label %4376

4376:                                             ; preds = %4374, %4376
  %4377 = phi ptr [ %4483, %4376 ], [ %4375, %4374 ]
  %4378 = phi i64 [ %4484, %4376 ], [ 0, %4374 ]
  %4379 = load ptr, ptr %150, align 8, !tbaa !27
  %4380 = getelementptr inbounds nuw %struct.Piece, ptr %4379, i64 %4378
  %4381 = getelementptr inbounds nuw i8, ptr %4380, i64 7568
  %4382 = load ptr, ptr %4381, align 16, !tbaa !46
  %4383 = load i64, ptr %140, align 8, !tbaa !20
  %4384 = getelementptr <8 x double>, ptr %4382, i64 %4383
  %4385 = getelementptr i8, ptr %4384, i64 -64
  %4386 = load <8 x double>, ptr %4385, align 64, !tbaa !25
  %4387 = getelementptr inbounds nuw i8, ptr %4380, i64 6848
  %4388 = load <8 x double>, ptr %4387, align 64, !tbaa !25
  %4389 = getelementptr inbounds nuw i8, ptr %4380, i64 5568
  %4390 = load <8 x double>, ptr %4389, align 64, !tbaa !25
  %4391 = fsub <8 x double> %4390, %4386
  %4392 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4388, <8 x double> %4391, <8 x double> %4386)
  %4393 = getelementptr inbounds nuw i8, ptr %4377, i64 64
  store <8 x double> %4392, ptr %4377, align 64, !tbaa !25
  %4394 = getelementptr inbounds nuw i8, ptr %4380, i64 6400
  %4395 = load <8 x double>, ptr %4394, align 64, !tbaa !25
  %4396 = getelementptr inbounds nuw i8, ptr %4377, i64 128
  store <8 x double> %4395, ptr %4393, align 64, !tbaa !25
  %4397 = load <8 x double>, ptr %4380, align 64, !tbaa !25
  %4398 = getelementptr inbounds nuw i8, ptr %4380, i64 3712
  %4399 = load <8 x double>, ptr %4398, align 64, !tbaa !25
  %4400 = fsub <8 x double> %4397, %4399
  %4401 = getelementptr inbounds nuw i8, ptr %4377, i64 192
  store <8 x double> %4400, ptr %4396, align 64, !tbaa !25
  %4402 = getelementptr inbounds nuw i8, ptr %4380, i64 4032
  %4403 = load <8 x double>, ptr %4402, align 64, !tbaa !25
  %4404 = getelementptr inbounds nuw i8, ptr %4377, i64 256
  store <8 x double> %4403, ptr %4401, align 64, !tbaa !25
  %4405 = getelementptr inbounds nuw i8, ptr %4380, i64 3968
  %4406 = load <8 x double>, ptr %4405, align 64, !tbaa !25
  %4407 = getelementptr inbounds nuw i8, ptr %4377, i64 320
  store <8 x double> %4406, ptr %4404, align 64, !tbaa !25
  %4408 = getelementptr inbounds nuw i8, ptr %4380, i64 3840
  %4409 = load <8 x double>, ptr %4408, align 64, !tbaa !25
  %4410 = getelementptr inbounds nuw i8, ptr %4377, i64 384
  store <8 x double> %4409, ptr %4407, align 64, !tbaa !25
  %4411 = getelementptr inbounds nuw i8, ptr %4380, i64 4096
  %4412 = load <8 x double>, ptr %4411, align 64, !tbaa !25
  %4413 = getelementptr inbounds nuw i8, ptr %4377, i64 448
  store <8 x double> %4412, ptr %4410, align 64, !tbaa !25
  %4414 = getelementptr inbounds nuw i8, ptr %4380, i64 7688
  %4415 = load i64, ptr %141, align 16, !tbaa !21
  %4416 = sitofp i64 %4415 to double
  %4417 = tail call double @llvm.fmuladd.f64(double %4416, double 7.500000e-01, double -5.000000e-01)
  %4418 = fcmp ogt double %4417, 0.000000e+00
  %4419 = select i1 %4418, double %4417, double 0.000000e+00
  %4420 = fptosi double %4419 to i64
  %4421 = add nsw i64 %4415, -2
  %4422 = tail call i64 @llvm.smin.i64(i64 %4421, i64 %4420)
  %4423 = sitofp i64 %4422 to double
  %4424 = fsub double %4417, %4423
  %4425 = fsub double 1.000000e+00, %4424
  %4426 = insertelement <8 x double> poison, double %4425, i64 0
  %4427 = shufflevector <8 x double> %4426, <8 x double> poison, <8 x i32> zeroinitializer
  %4428 = load ptr, ptr %4414, align 8, !tbaa !50
  %4429 = getelementptr inbounds <8 x double>, ptr %4428, i64 %4422
  %4430 = load <8 x double>, ptr %4429, align 64, !tbaa !25
  %4431 = insertelement <8 x double> poison, double %4424, i64 0
  %4432 = shufflevector <8 x double> %4431, <8 x double> poison, <8 x i32> zeroinitializer
  %4433 = getelementptr i8, ptr %4429, i64 64
  %4434 = load <8 x double>, ptr %4433, align 64, !tbaa !25
  %4435 = fmul <8 x double> %4434, %4432
  %4436 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4427, <8 x double> %4430, <8 x double> %4435)
  store <8 x double> %4436, ptr %4413, align 64, !tbaa !25
  %4437 = load i64, ptr %141, align 16, !tbaa !21
  %4438 = sitofp i64 %4437 to double
  %4439 = tail call double @llvm.fmuladd.f64(double %4438, double 5.000000e-01, double -5.000000e-01)
  %4440 = fcmp ogt double %4439, 0.000000e+00
  %4441 = select i1 %4440, double %4439, double 0.000000e+00
  %4442 = fptosi double %4441 to i64
  %4443 = add nsw i64 %4437, -2
  %4444 = tail call i64 @llvm.smin.i64(i64 %4443, i64 %4442)
  %4445 = sitofp i64 %4444 to double
  %4446 = fsub double %4439, %4445
  %4447 = fsub double 1.000000e+00, %4446
  %4448 = insertelement <8 x double> poison, double %4447, i64 0
  %4449 = shufflevector <8 x double> %4448, <8 x double> poison, <8 x i32> zeroinitializer
  %4450 = load ptr, ptr %4414, align 8, !tbaa !50
  %4451 = getelementptr inbounds <8 x double>, ptr %4450, i64 %4444
  %4452 = load <8 x double>, ptr %4451, align 64, !tbaa !25
  %4453 = insertelement <8 x double> poison, double %4446, i64 0
  %4454 = shufflevector <8 x double> %4453, <8 x double> poison, <8 x i32> zeroinitializer
  %4455 = getelementptr i8, ptr %4451, i64 64
  %4456 = load <8 x double>, ptr %4455, align 64, !tbaa !25
  %4457 = fmul <8 x double> %4456, %4454
  %4458 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4449, <8 x double> %4452, <8 x double> %4457)
  %4459 = getelementptr inbounds nuw i8, ptr %4377, i64 512
  store <8 x double> %4458, ptr %4459, align 64, !tbaa !25
  %4460 = load i64, ptr %141, align 16, !tbaa !21
  %4461 = sitofp i64 %4460 to double
  %4462 = tail call double @llvm.fmuladd.f64(double %4461, double 2.500000e-01, double -5.000000e-01)
  %4463 = fcmp ogt double %4462, 0.000000e+00
  %4464 = select i1 %4463, double %4462, double 0.000000e+00
  %4465 = fptosi double %4464 to i64
  %4466 = add nsw i64 %4460, -2
  %4467 = tail call i64 @llvm.smin.i64(i64 %4466, i64 %4465)
  %4468 = sitofp i64 %4467 to double
  %4469 = fsub double %4462, %4468
  %4470 = fsub double 1.000000e+00, %4469
  %4471 = insertelement <8 x double> poison, double %4470, i64 0
  %4472 = shufflevector <8 x double> %4471, <8 x double> poison, <8 x i32> zeroinitializer
  %4473 = load ptr, ptr %4414, align 8, !tbaa !50
  %4474 = getelementptr inbounds <8 x double>, ptr %4473, i64 %4467
  %4475 = load <8 x double>, ptr %4474, align 64, !tbaa !25
  %4476 = insertelement <8 x double> poison, double %4469, i64 0
  %4477 = shufflevector <8 x double> %4476, <8 x double> poison, <8 x i32> zeroinitializer
  %4478 = getelementptr i8, ptr %4474, i64 64
  %4479 = load <8 x double>, ptr %4478, align 64, !tbaa !25
  %4480 = fmul <8 x double> %4479, %4477
  %4481 = tail call <8 x double> @llvm.fmuladd.v8f64(<8 x double> %4472, <8 x double> %4475, <8 x double> %4480)
  %4482 = getelementptr inbounds nuw i8, ptr %4377, i64 576
  store <8 x double> %4481, ptr %4482, align 64, !tbaa !25
  %4483 = getelementptr inbounds nuw i8, ptr %4377, i64 640
  %4484 = add nuw nsw i64 %4378, 1
  %4485 = load i64, ptr %149, align 64, !tbaa !16
  %4486 = icmp slt i64 %4484, %4485
  br i1 %4486, label %4376, label %4487, !llvm.loop !135

4487:                                             ; preds = %4376, %4362, %4348
  br label %4488

4488:                                             ; preds = %4487, %4564
  %4489 = phi i64 [ %4565, %4564 ], [ 0, %4487 ]
  %4490 = getelementptr inbounds nuw i64, ptr %13, i64 %4489
  %4491 = load i64, ptr %4490, align 8, !tbaa !29
  %4492 = icmp eq i64 %4491, 0
  br i1 %4492, label %4564, label %4493

4493:                                             ; preds = %4488
  %4494 = getelementptr inbounds nuw [8 x i64], ptr %236, i64 0, i64 %4489
  %4495 = load i64, ptr %4494, align 8, !tbaa !29
  %4496 = load i64, ptr %237, align 8, !tbaa !136
  %4497 = icmp eq i64 %4495, %4496
  br i1 %4497, label %4501, label %4498

4498:                                             ; preds = %4493
  %4499 = getelementptr inbounds nuw [8 x ptr], ptr %241, i64 0, i64 %4489
  %4500 = load ptr, ptr %4499, align 8, !tbaa !137
  br label %4516

4501:                                             ; preds = %4493
  %4502 = getelementptr inbounds nuw [8 x i64], ptr %142, i64 0, i64 %4489
  %4503 = load i64, ptr %4502, align 8, !tbaa !29
  %4504 = load ptr, ptr %238, align 8, !tbaa !138
  %4505 = load i64, ptr %133, align 8, !tbaa !41
  %4506 = getelementptr inbounds i64, ptr %4504, i64 %4505
  store i64 %4503, ptr %4506, align 8, !tbaa !29
  %4507 = load ptr, ptr %239, align 8, !tbaa !139
  %4508 = load i64, ptr %133, align 8, !tbaa !41
  %4509 = add nsw i64 %4508, 1
  store i64 %4509, ptr %133, align 8, !tbaa !41
  %4510 = load i64, ptr %237, align 8, !tbaa !136
  %4511 = mul nsw i64 %4510, %4508
  %4512 = load i64, ptr %240, align 8, !tbaa !15
  %4513 = mul nsw i64 %4511, %4512
  %4514 = getelementptr inbounds double, ptr %4507, i64 %4513
  %4515 = getelementptr inbounds nuw [8 x ptr], ptr %241, i64 0, i64 %4489
  store ptr %4514, ptr %4515, align 8, !tbaa !137
  br label %4516

4516:                                             ; preds = %4498, %4501
  %4517 = phi i64 [ %4495, %4498 ], [ 0, %4501 ]
  %4518 = phi ptr [ %4500, %4498 ], [ %4514, %4501 ]
  %4519 = add nsw i64 %4517, 1
  store i64 %4519, ptr %4494, align 8, !tbaa !29
  %4520 = load i64, ptr %240, align 8, !tbaa !15
  %4521 = mul nsw i64 %4520, %4517
  %4522 = getelementptr inbounds double, ptr %4518, i64 %4521
  %4523 = icmp sgt i64 %4520, 0
  br i1 %4523, label %4524, label %4564

4524:                                             ; preds = %4516
  %4525 = load ptr, ptr %233, align 64, !tbaa !37
  %4526 = getelementptr inbounds nuw double, ptr %4525, i64 %4489
  %4527 = and i64 %4520, 3
  %4528 = icmp ult i64 %4520, 4
  br i1 %4528, label %4552, label %4529

4529:                                             ; preds = %4524
  %4530 = and i64 %4520, 9223372036854775804
  br label %4531

4531:                                             ; preds = %4531, %4529
  %4532 = phi i64 [ 0, %4529 ], [ %4549, %4531 ]
  %4533 = phi i64 [ 0, %4529 ], [ %4550, %4531 ]
  %4534 = getelementptr inbounds nuw <8 x double>, ptr %4526, i64 %4532
  %4535 = load double, ptr %4534, align 8, !tbaa !42
  %4536 = getelementptr inbounds nuw double, ptr %4522, i64 %4532
  store double %4535, ptr %4536, align 8, !tbaa !42
  %4537 = or disjoint i64 %4532, 1
  %4538 = getelementptr inbounds nuw <8 x double>, ptr %4526, i64 %4537
  %4539 = load double, ptr %4538, align 8, !tbaa !42
  %4540 = getelementptr inbounds nuw double, ptr %4522, i64 %4537
  store double %4539, ptr %4540, align 8, !tbaa !42
  %4541 = or disjoint i64 %4532, 2
  %4542 = getelementptr inbounds nuw <8 x double>, ptr %4526, i64 %4541
  %4543 = load double, ptr %4542, align 8, !tbaa !42
  %4544 = getelementptr inbounds nuw double, ptr %4522, i64 %4541
  store double %4543, ptr %4544, align 8, !tbaa !42
  %4545 = or disjoint i64 %4532, 3
  %4546 = getelementptr inbounds nuw <8 x double>, ptr %4526, i64 %4545
  %4547 = load double, ptr %4546, align 8, !tbaa !42
  %4548 = getelementptr inbounds nuw double, ptr %4522, i64 %4545
  store double %4547, ptr %4548, align 8, !tbaa !42
  %4549 = add nuw nsw i64 %4532, 4
  %4550 = add i64 %4533, 4
  %4551 = icmp eq i64 %4550, %4530
  br i1 %4551, label %4552, label %4531, !llvm.loop !140

4552:                                             ; preds = %4531, %4524
  %4553 = phi i64 [ 0, %4524 ], [ %4549, %4531 ]
  %4554 = icmp eq i64 %4527, 0
  br i1 %4554, label %4564, label %4555

4555:                                             ; preds = %4552, %4555
  %4556 = phi i64 [ %4561, %4555 ], [ %4553, %4552 ]
  %4557 = phi i64 [ %4562, %4555 ], [ 0, %4552 ]
  %4558 = getelementptr inbounds nuw <8 x double>, ptr %4526, i64 %4556
  %4559 = load double, ptr %4558, align 8, !tbaa !42
  %4560 = getelementptr inbounds nuw double, ptr %4522, i64 %4556
  store double %4559, ptr %4560, align 8, !tbaa !42
  %4561 = add nuw nsw i64 %4556, 1
  %4562 = add i64 %4557, 1
  %4563 = icmp eq i64 %4562, %4527
  br i1 %4563, label %4564, label %4555, !llvm.loop !141

4564:                                             ; preds = %4552, %4555, %4516, %4488
  %4565 = add nuw nsw i64 %4489, 1
  %4566 = icmp eq i64 %4565, 8
  br i1 %4566, label %4567, label %4488, !llvm.loop !143

4567:                                             ; preds = %4564
  call void @llvm.lifetime.end.p0(i64 64, ptr nonnull %13)
  %4568 = load <8 x double>, ptr %157, align 64, !tbaa !25
  %4569 = load <8 x double>, ptr %162, align 64, !tbaa !25
  %4570 = fsub <8 x double> %4568, %4569
  %4571 = load <8 x double>, ptr %163, align 64, !tbaa !25
  %4572 = fadd <8 x double> %4571, splat (double -1.000000e-09)
  %4573 = fcmp oge <8 x double> %4570, %4572
  %4574 = select <8 x i1> %4573, <8 x i64> %3535, <8 x i64> zeroinitializer
  %4575 = load i64, ptr %149, align 64, !tbaa !16
  %4576 = icmp sgt i64 %4575, 0
  br i1 %4576, label %4577, label %4609

4577:                                             ; preds = %4567
  %4578 = load ptr, ptr %150, align 8, !tbaa !27
  %4579 = and i64 %4575, 1
  %4580 = icmp eq i64 %4575, 1
  br i1 %4580, label %4599, label %4581

4581:                                             ; preds = %4577
  %4582 = and i64 %4575, 9223372036854775806
  br label %4583

4583:                                             ; preds = %4583, %4581
  %4584 = phi i64 [ 0, %4581 ], [ %4596, %4583 ]
  %4585 = phi <8 x double> [ splat (double 1.000000e+09), %4581 ], [ %4595, %4583 ]
  %4586 = phi i64 [ 0, %4581 ], [ %4597, %4583 ]
  %4587 = getelementptr inbounds nuw %struct.Piece, ptr %4578, i64 %4584, i32 35
  %4588 = load <8 x double>, ptr %4587, align 64, !tbaa !25
  %4589 = fcmp olt <8 x double> %4585, %4588
  %4590 = select <8 x i1> %4589, <8 x double> %4585, <8 x double> %4588
  %4591 = or disjoint i64 %4584, 1
  %4592 = getelementptr inbounds nuw %struct.Piece, ptr %4578, i64 %4591, i32 35
  %4593 = load <8 x double>, ptr %4592, align 64, !tbaa !25
  %4594 = fcmp olt <8 x double> %4590, %4593
  %4595 = select <8 x i1> %4594, <8 x double> %4590, <8 x double> %4593
  %4596 = add nuw nsw i64 %4584, 2
  %4597 = add i64 %4586, 2
  %4598 = icmp eq i64 %4597, %4582
  br i1 %4598, label %4599, label %4583, !llvm.loop !118

4599:                                             ; preds = %4583, %4577
  %4600 = phi <8 x double> [ poison, %4577 ], [ %4595, %4583 ]
  %4601 = phi i64 [ 0, %4577 ], [ %4596, %4583 ]
  %4602 = phi <8 x double> [ splat (double 1.000000e+09), %4577 ], [ %4595, %4583 ]
  %4603 = icmp eq i64 %4579, 0
  br i1 %4603, label %4609, label %4604

4604:                                             ; preds = %4599
  %4605 = getelementptr inbounds nuw %struct.Piece, ptr %4578, i64 %4601, i32 35
  %4606 = load <8 x double>, ptr %4605, align 64, !tbaa !25
  %4607 = fcmp olt <8 x double> %4602, %4606
  %4608 = select <8 x i1> %4607, <8 x double> %4602, <8 x double> %4606
  br label %4609

4609:                                             ; preds = %4604, %4599, %4567
  %4610 = phi <8 x double> [ splat (double 1.000000e+09), %4567 ], [ %4600, %4599 ], [ %4608, %4604 ]
  %4611 = load <8 x double>, ptr %229, align 64, !tbaa !25
  %4612 = select <8 x i1> %3595, <8 x double> %4611, <8 x double> %4610
  store <8 x double> %4612, ptr %229, align 64, !tbaa !25
  %4613 = load <8 x double>, ptr %230, align 64, !tbaa !25
  %4614 = fcmp une <8 x double> %4613, zeroinitializer
  %4615 = load <8 x double>, ptr %202, align 64, !tbaa !25
  %4616 = load <8 x double>, ptr %193, align 64, !tbaa !25
  %4617 = fsub <8 x double> %4615, %4616
  %4618 = fcmp une <8 x double> %4613, splat (double 1.000000e+00)
  %4619 = load <8 x double>, ptr %172, align 64, !tbaa !25
  %4620 = load <8 x double>, ptr %231, align 64, !tbaa !25
  %4621 = fsub <8 x double> %4619, %4620
  %4622 = select <8 x i1> %4618, <8 x double> splat (double -1.000000e+00), <8 x double> %4621
  %4623 = fcmp une <8 x double> %4613, splat (double 2.000000e+00)
  %4624 = fsub <8 x double> %4612, %4620
  %4625 = select <8 x i1> %4623, <8 x double> %4622, <8 x double> %4624
  %4626 = fcmp une <8 x double> %4613, splat (double 3.000000e+00)
  %4627 = fsub <8 x double> %4617, %4620
  %4628 = select <8 x i1> %4626, <8 x double> %4625, <8 x double> %4627
  %4629 = fcmp une <8 x double> %4613, splat (double 4.000000e+00)
  %4630 = fsub <8 x double> %4620, %4617
  %4631 = select <8 x i1> %4629, <8 x double> %4628, <8 x double> %4630
  %4632 = fcmp oge <8 x double> %4631, splat (double 0xBEB0C6F7A0B5ED8D)
  %4633 = select <8 x i1> %4632, <8 x i1> %4614, <8 x i1> zeroinitializer
  %4634 = select <8 x i1> %4633, <8 x i64> %3535, <8 x i64> zeroinitializer
  %4635 = xor <8 x i64> %4634, splat (i64 -1)
  %4636 = and <8 x i64> %4574, %4635
  %4637 = load <8 x double>, ptr %147, align 64, !tbaa !25
  %4638 = icmp ne <8 x i64> %4636, zeroinitializer
  %4639 = select <8 x i1> %4614, <8 x i1> %4638, <8 x i1> zeroinitializer
  %4640 = select <8 x i1> %4639, <8 x double> splat (double 2.000000e+00), <8 x double> %4637
  store <8 x double> %4640, ptr %147, align 64, !tbaa !25
  %4641 = or <8 x i64> %4634, %4574
  %4642 = load <8 x double>, ptr %234, align 64, !tbaa !25
  %4643 = fadd <8 x double> %4642, splat (double 1.000000e+00)
  %4644 = icmp eq <8 x i64> %4641, zeroinitializer
  %4645 = select <8 x i1> %4644, <8 x double> %4642, <8 x double> %4643
  store <8 x double> %4645, ptr %234, align 64, !tbaa !25
  %4646 = xor <8 x i64> %4641, %3535
  %4647 = load <8 x double>, ptr %181, align 64, !tbaa !25
  %4648 = fcmp oeq <8 x double> %4647, zeroinitializer
  %4649 = load <8 x double>, ptr %180, align 64, !tbaa !25
  %4650 = fcmp oeq <8 x double> %4649, zeroinitializer
  %4651 = select <8 x i1> %4650, <8 x i1> %4648, <8 x i1> zeroinitializer
  %4652 = select <8 x i1> %4651, <8 x i64> %4646, <8 x i64> zeroinitializer
  %4653 = load <8 x double>, ptr %228, align 64, !tbaa !25
  %4654 = fmul <8 x double> %4653, splat (double 5.000000e-01)
  %4655 = load <8 x double>, ptr %216, align 64, !tbaa !25
  %4656 = fadd <8 x double> %4655, %4654
  %4657 = fadd <8 x double> %4656, splat (double -1.000000e-03)
  %4658 = fcmp ult <8 x double> %4619, %4657
  %4659 = fsub <8 x double> %4655, %4654
  %4660 = fadd <8 x double> %4659, splat (double 1.000000e-03)
  %4661 = fcmp ole <8 x double> %4619, %4660
  %4662 = load <8 x i64>, ptr %174, align 64, !tbaa !25
  %4663 = select <8 x i1> %4661, <8 x i64> splat (i64 -1), <8 x i64> %4662
  %4664 = select <8 x i1> %4658, <8 x i64> %4663, <8 x i64> zeroinitializer
  %4665 = xor <8 x i64> %4664, %4662
  %4666 = and <8 x i64> %4665, %4652
  %4667 = and <8 x i64> %4664, %4652
  %4668 = xor <8 x i64> %4652, splat (i64 -1)
  %4669 = and <8 x i64> %4662, %4668
  %4670 = or <8 x i64> %4667, %4669
  store <8 x i64> %4670, ptr %174, align 64, !tbaa !25
  %4671 = load <8 x i64>, ptr %167, align 64, !tbaa !25
  %4672 = or <8 x i64> %4666, %4671
  store <8 x i64> %4672, ptr %167, align 64, !tbaa !25
  %4673 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4641)
  %4674 = icmp eq i64 %4673, 0
  br i1 %4674, label %4709, label %4675

4675:                                             ; preds = %4609
  %4676 = extractelement <8 x i64> %4641, i64 0
  %4677 = icmp eq i64 %4676, 0
  br i1 %4677, label %4679, label %4678

4678:                                             ; preds = %4675
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #6
  br label %4679

4679:                                             ; preds = %4678, %4675
  %4680 = extractelement <8 x i64> %4641, i64 1
  %4681 = icmp eq i64 %4680, 0
  br i1 %4681, label %4683, label %4682

4682:                                             ; preds = %4679
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #6
  br label %4683

4683:                                             ; preds = %4682, %4679
  %4684 = extractelement <8 x i64> %4641, i64 2
  %4685 = icmp eq i64 %4684, 0
  br i1 %4685, label %4687, label %4686

4686:                                             ; preds = %4683
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 2) #6
  br label %4687

4687:                                             ; preds = %4686, %4683
  %4688 = extractelement <8 x i64> %4641, i64 3
  %4689 = icmp eq i64 %4688, 0
  br i1 %4689, label %4691, label %4690

4690:                                             ; preds = %4687
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 3) #6
  br label %4691

4691:                                             ; preds = %4690, %4687
  %4692 = extractelement <8 x i64> %4641, i64 4
  %4693 = icmp eq i64 %4692, 0
  br i1 %4693, label %4695, label %4694

4694:                                             ; preds = %4691
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 4) #6
  br label %4695

4695:                                             ; preds = %4694, %4691
  %4696 = extractelement <8 x i64> %4641, i64 5
  %4697 = icmp eq i64 %4696, 0
  br i1 %4697, label %4699, label %4698

4698:                                             ; preds = %4695
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 5) #6
  br label %4699

4699:                                             ; preds = %4698, %4695
  %4700 = extractelement <8 x i64> %4641, i64 6
  %4701 = icmp eq i64 %4700, 0
  br i1 %4701, label %4703, label %4702

4702:                                             ; preds = %4699
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 6) #6
  br label %4703

4703:                                             ; preds = %4702, %4699
  %4704 = extractelement <8 x i64> %4641, i64 7
  %4705 = icmp eq i64 %4704, 0
  br i1 %4705, label %4707, label %4706

4706:                                             ; preds = %4703
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 7) #6
  br label %4707

4707:                                             ; preds = %4706, %4703
  %4708 = load <8 x double>, ptr %147, align 64, !tbaa !25
  br label %4709

4709:                                             ; preds = %4707, %4609
  %4710 = phi <8 x double> [ %4708, %4707 ], [ %4640, %4609 ]
  %4711 = load <8 x double>, ptr %144, align 64, !tbaa !25
  %4712 = load <8 x double>, ptr %242, align 64, !tbaa !25
  %4713 = fadd <8 x double> %4712, splat (double -1.000000e+00)
  %4714 = fcmp oge <8 x double> %4711, %4713
  %4715 = select <8 x i1> %4714, <8 x i64> %3535, <8 x i64> zeroinitializer
  %4716 = icmp eq <8 x i64> %4715, zeroinitializer
  %4717 = select <8 x i1> %4716, <8 x double> %4710, <8 x double> splat (double 1.000000e+00)
  store <8 x double> %4717, ptr %147, align 64, !tbaa !25
  %4718 = tail call i64 @llvm.vector.reduce.or.v8i64(<8 x i64> %4715)
  %4719 = icmp eq i64 %4718, 0
  br i1 %4719, label %544, label %4720

4720:                                             ; preds = %4709
  %4721 = extractelement <8 x i64> %4715, i64 0
  %4722 = icmp eq i64 %4721, 0
  br i1 %4722, label %4724, label %4723

4723:                                             ; preds = %4720
  store double 1.000000e+00, ptr %139, align 8, !tbaa !42
  br label %4724

4724:                                             ; preds = %4723, %4720
  %4725 = extractelement <8 x i64> %4715, i64 1
  %4726 = icmp eq i64 %4725, 0
  br i1 %4726, label %4728, label %4727

4727:                                             ; preds = %4724
  store double 1.000000e+00, ptr %272, align 8, !tbaa !42
  br label %4728

4728:                                             ; preds = %4727, %4724
  %4729 = extractelement <8 x i64> %4715, i64 2
  %4730 = icmp eq i64 %4729, 0
  br i1 %4730, label %4732, label %4731

4731:                                             ; preds = %4728
  store double 1.000000e+00, ptr %273, align 8, !tbaa !42
  br label %4732

4732:                                             ; preds = %4731, %4728
  %4733 = extractelement <8 x i64> %4715, i64 3
  %4734 = icmp eq i64 %4733, 0
  br i1 %4734, label %4736, label %4735

4735:                                             ; preds = %4732
  store double 1.000000e+00, ptr %274, align 8, !tbaa !42
  br label %4736

4736:                                             ; preds = %4735, %4732
  %4737 = extractelement <8 x i64> %4715, i64 4
  %4738 = icmp eq i64 %4737, 0
  br i1 %4738, label %4740, label %4739

4739:                                             ; preds = %4736
  store double 1.000000e+00, ptr %275, align 8, !tbaa !42
  br label %4740

4740:                                             ; preds = %4739, %4736
  %4741 = extractelement <8 x i64> %4715, i64 5
  %4742 = icmp eq i64 %4741, 0
  br i1 %4742, label %4744, label %4743

4743:                                             ; preds = %4740
  store double 1.000000e+00, ptr %276, align 8, !tbaa !42
  br label %4744

4744:                                             ; preds = %4743, %4740
  %4745 = extractelement <8 x i64> %4715, i64 6
  %4746 = icmp eq i64 %4745, 0
  br i1 %4746, label %4748, label %4747

4747:                                             ; preds = %4744
  store double 1.000000e+00, ptr %277, align 8, !tbaa !42
  br label %4748

4748:                                             ; preds = %4747, %4744
  %4749 = extractelement <8 x i64> %4715, i64 7
  %4750 = icmp eq i64 %4749, 0
  br i1 %4750, label %544, label %4751

4751:                                             ; preds = %4748
  store double 1.000000e+00, ptr %278, align 8, !tbaa !42
  br label %544

4752:                                             ; preds = %544, %549, %130
  %4753 = phi i64 [ 0, %130 ], [ 1, %549 ], [ 0, %544 ]
  ret i64 %4753
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 2336
  %6 = load i64, ptr %5, align 32, !tbaa !26
  %7 = add nsw i64 %6, 1
  store i64 %7, ptr %5, align 32, !tbaa !26
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %6) #6
  store <8 x i64> zeroinitializer, ptr %4, align 64, !tbaa !25
  %8 = sext i32 %2 to i64
  %9 = getelementptr inbounds i64, ptr %4, i64 %8
  store i64 -1, ptr %9, align 8, !tbaa !29
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5952
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
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 5960
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
  %61 = getelementptr inbounds nuw i8, ptr %0, i64 5960
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
  %176 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %180 = load ptr, ptr %179, align 8
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %184 = getelementptr inbounds nuw i8, ptr %0, i64 5824
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
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 5568
  %6 = sext i32 %2 to i64
  %7 = getelementptr inbounds [8 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !29
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !136
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 5632
  %11 = getelementptr inbounds [8 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !29
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 5696
  %13 = shl nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = sext i32 %14 to i64
  %16 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !29
  %17 = sext i32 %13 to i64
  %18 = getelementptr inbounds [16 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !29
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 5888
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
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 5960
  %32 = load ptr, ptr %31, align 8, !tbaa !27
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 2312
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 2320
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %36 = load ptr, ptr %35, align 8, !tbaa !146
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %38 = load ptr, ptr %37, align 8, !tbaa !147
  %39 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %40 = load ptr, ptr %39, align 8, !tbaa !148
  br label %153

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

60:                                               ; preds = %532, %26
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
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 5248
  %134 = getelementptr inbounds double, ptr %123, i64 %6
  store double 0.000000e+00, ptr %134, align 8, !tbaa !42
  %135 = getelementptr inbounds double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %135, align 8, !tbaa !42
  %136 = getelementptr inbounds double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !42
  %137 = getelementptr inbounds double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !42
  %138 = getelementptr inbounds double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !42
  %139 = getelementptr inbounds double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !42
  %140 = getelementptr inbounds double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !42
  %141 = getelementptr inbounds double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !42
  %142 = getelementptr inbounds double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !42
  %143 = getelementptr inbounds double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !42
  %144 = getelementptr inbounds double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !42
  %145 = getelementptr inbounds nuw i8, ptr %0, i64 5440
  %146 = getelementptr inbounds i64, ptr %145, i64 %6
  store i64 0, ptr %146, align 8, !tbaa !29
  %147 = getelementptr inbounds nuw i8, ptr %0, i64 5504
  %148 = getelementptr inbounds i64, ptr %147, i64 %6
  store i64 -1, ptr %148, align 8, !tbaa !29
  %149 = getelementptr inbounds nuw i8, ptr %0, i64 5376
  %150 = getelementptr inbounds i64, ptr %149, i64 %6
  store i64 -1, ptr %150, align 8, !tbaa !29
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 5312
  %152 = getelementptr inbounds i64, ptr %151, i64 %6
  store i64 -1, ptr %152, align 8, !tbaa !29
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 64 dereferenceable(5968) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #6
  ret void

153:                                              ; preds = %30, %532
  %154 = phi i64 [ %28, %30 ], [ %534, %532 ]
  %155 = phi i64 [ 0, %30 ], [ %533, %532 ]
  %156 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %155
  %157 = load i64, ptr %33, align 8, !tbaa !20
  %158 = load i64, ptr %34, align 16, !tbaa !21
  %159 = mul nsw i64 %154, %3
  %160 = add nsw i64 %159, %155
  %161 = getelementptr inbounds nuw i8, ptr %156, i64 7552
  %162 = load i64, ptr %161, align 64, !tbaa !30
  %163 = mul i64 %160, 368
  %164 = getelementptr i8, ptr %36, i64 %163
  %165 = getelementptr double, ptr %156, i64 %6
  br label %195

166:                                              ; preds = %195
  %167 = icmp eq i64 %162, 0
  %168 = getelementptr inbounds i64, ptr %40, i64 %160
  %169 = load i64, ptr %168, align 8, !tbaa !29
  %170 = mul nsw i64 %157, 3
  %171 = add nsw i64 %157, 1
  %172 = select i1 %167, i64 0, i64 2
  %173 = shl i64 %171, %172
  %174 = add nsw i64 %173, %170
  %175 = mul nsw i64 %169, %174
  %176 = getelementptr inbounds double, ptr %38, i64 %175
  %177 = icmp sgt i64 %157, 0
  br i1 %177, label %178, label %219

178:                                              ; preds = %166
  %179 = getelementptr inbounds nuw i8, ptr %156, i64 7648
  %180 = load ptr, ptr %179, align 32, !tbaa !71
  %181 = getelementptr double, ptr %180, i64 %6
  %182 = getelementptr double, ptr %176, i64 %157
  %183 = getelementptr inbounds nuw i8, ptr %156, i64 7656
  %184 = load ptr, ptr %183, align 8, !tbaa !48
  %185 = getelementptr double, ptr %184, i64 %6
  %186 = shl i64 %157, 4
  %187 = getelementptr i8, ptr %176, i64 %186
  %188 = getelementptr inbounds nuw i8, ptr %156, i64 7664
  %189 = load ptr, ptr %188, align 16, !tbaa !120
  %190 = getelementptr double, ptr %189, i64 %6
  %191 = and i64 %157, 1
  %192 = icmp eq i64 %157, 1
  br i1 %192, label %206, label %193

193:                                              ; preds = %178
  %194 = and i64 %157, 9223372036854775806
  br label %234

195:                                              ; preds = %195, %153
  %196 = phi i64 [ 0, %153 ], [ %204, %195 ]
  %197 = getelementptr double, ptr %164, i64 %196
  %198 = load double, ptr %197, align 8, !tbaa !42
  %199 = getelementptr <8 x double>, ptr %165, i64 %196
  store double %198, ptr %199, align 8, !tbaa !42
  %200 = or disjoint i64 %196, 1
  %201 = getelementptr double, ptr %164, i64 %200
  %202 = load double, ptr %201, align 8, !tbaa !42
  %203 = getelementptr <8 x double>, ptr %165, i64 %200
  store double %202, ptr %203, align 8, !tbaa !42
  %204 = add nuw nsw i64 %196, 2
  %205 = icmp eq i64 %204, 46
  br i1 %205, label %166, label %195, !llvm.loop !150

206:                                              ; preds = %234, %178
  %207 = phi i64 [ 0, %178 ], [ %256, %234 ]
  %208 = icmp eq i64 %191, 0
  br i1 %208, label %219, label %209

209:                                              ; preds = %206
  %210 = getelementptr inbounds nuw double, ptr %176, i64 %207
  %211 = load double, ptr %210, align 8, !tbaa !42
  %212 = getelementptr <8 x double>, ptr %181, i64 %207
  store double %211, ptr %212, align 8, !tbaa !42
  %213 = getelementptr double, ptr %182, i64 %207
  %214 = load double, ptr %213, align 8, !tbaa !42
  %215 = getelementptr <8 x double>, ptr %185, i64 %207
  store double %214, ptr %215, align 8, !tbaa !42
  %216 = getelementptr double, ptr %187, i64 %207
  %217 = load double, ptr %216, align 8, !tbaa !42
  %218 = getelementptr <8 x double>, ptr %190, i64 %207
  store double %217, ptr %218, align 8, !tbaa !42
  br label %219

219:                                              ; preds = %209, %206, %166
  %220 = getelementptr inbounds nuw i8, ptr %156, i64 960
  %221 = getelementptr inbounds double, ptr %220, i64 %6
  %222 = load double, ptr %221, align 8, !tbaa !42
  %223 = load double, ptr %165, align 8, !tbaa !42
  %224 = icmp sgt i64 %173, 0
  br i1 %224, label %225, label %271

225:                                              ; preds = %219
  %226 = getelementptr double, ptr %176, i64 %170
  %227 = getelementptr inbounds nuw i8, ptr %156, i64 7672
  %228 = load ptr, ptr %227, align 8, !tbaa !34
  %229 = getelementptr double, ptr %228, i64 %6
  %230 = and i64 %173, 3
  %231 = icmp ult i64 %173, 4
  br i1 %231, label %259, label %232

232:                                              ; preds = %225
  %233 = and i64 %173, 9223372036854775804
  br label %280

234:                                              ; preds = %234, %193
  %235 = phi i64 [ 0, %193 ], [ %256, %234 ]
  %236 = phi i64 [ 0, %193 ], [ %257, %234 ]
  %237 = getelementptr inbounds nuw double, ptr %176, i64 %235
  %238 = load double, ptr %237, align 8, !tbaa !42
  %239 = getelementptr <8 x double>, ptr %181, i64 %235
  store double %238, ptr %239, align 8, !tbaa !42
  %240 = getelementptr double, ptr %182, i64 %235
  %241 = load double, ptr %240, align 8, !tbaa !42
  %242 = getelementptr <8 x double>, ptr %185, i64 %235
  store double %241, ptr %242, align 8, !tbaa !42
  %243 = getelementptr double, ptr %187, i64 %235
  %244 = load double, ptr %243, align 8, !tbaa !42
  %245 = getelementptr <8 x double>, ptr %190, i64 %235
  store double %244, ptr %245, align 8, !tbaa !42
  %246 = or disjoint i64 %235, 1
  %247 = getelementptr inbounds nuw double, ptr %176, i64 %246
  %248 = load double, ptr %247, align 8, !tbaa !42
  %249 = getelementptr <8 x double>, ptr %181, i64 %246
  store double %248, ptr %249, align 8, !tbaa !42
  %250 = getelementptr double, ptr %182, i64 %246
  %251 = load double, ptr %250, align 8, !tbaa !42
  %252 = getelementptr <8 x double>, ptr %185, i64 %246
  store double %251, ptr %252, align 8, !tbaa !42
  %253 = getelementptr double, ptr %187, i64 %246
  %254 = load double, ptr %253, align 8, !tbaa !42
  %255 = getelementptr <8 x double>, ptr %190, i64 %246
  store double %254, ptr %255, align 8, !tbaa !42
  %256 = add nuw nsw i64 %235, 2
  %257 = add i64 %236, 2
  %258 = icmp eq i64 %257, %194
  br i1 %258, label %206, label %234, !llvm.loop !151

259:                                              ; preds = %280, %225
  %260 = phi i64 [ 0, %225 ], [ %298, %280 ]
  %261 = icmp eq i64 %230, 0
  br i1 %261, label %271, label %262

262:                                              ; preds = %259, %262
  %263 = phi i64 [ %268, %262 ], [ %260, %259 ]
  %264 = phi i64 [ %269, %262 ], [ 0, %259 ]
  %265 = getelementptr double, ptr %226, i64 %263
  %266 = load double, ptr %265, align 8, !tbaa !42
  %267 = getelementptr <8 x double>, ptr %229, i64 %263
  store double %266, ptr %267, align 8, !tbaa !42
  %268 = add nuw nsw i64 %263, 1
  %269 = add i64 %264, 1
  %270 = icmp eq i64 %269, %230
  br i1 %270, label %271, label %262, !llvm.loop !152

271:                                              ; preds = %259, %262, %219
  %272 = icmp ne i64 %162, 0
  %273 = icmp sgt i64 %157, -1
  %274 = select i1 %272, i1 %273, i1 false
  br i1 %274, label %275, label %301

275:                                              ; preds = %271
  %276 = fdiv double 1.000000e+00, %223
  %277 = getelementptr inbounds nuw i8, ptr %156, i64 7672
  %278 = load ptr, ptr %277, align 8, !tbaa !34
  %279 = getelementptr double, ptr %278, i64 %6
  br label %420

280:                                              ; preds = %280, %232
  %281 = phi i64 [ 0, %232 ], [ %298, %280 ]
  %282 = phi i64 [ 0, %232 ], [ %299, %280 ]
  %283 = getelementptr double, ptr %226, i64 %281
  %284 = load double, ptr %283, align 8, !tbaa !42
  %285 = getelementptr <8 x double>, ptr %229, i64 %281
  store double %284, ptr %285, align 8, !tbaa !42
  %286 = or disjoint i64 %281, 1
  %287 = getelementptr double, ptr %226, i64 %286
  %288 = load double, ptr %287, align 8, !tbaa !42
  %289 = getelementptr <8 x double>, ptr %229, i64 %286
  store double %288, ptr %289, align 8, !tbaa !42
  %290 = or disjoint i64 %281, 2
  %291 = getelementptr double, ptr %226, i64 %290
  %292 = load double, ptr %291, align 8, !tbaa !42
  %293 = getelementptr <8 x double>, ptr %229, i64 %290
  store double %292, ptr %293, align 8, !tbaa !42
  %294 = or disjoint i64 %281, 3
  %295 = getelementptr double, ptr %226, i64 %294
  %296 = load double, ptr %295, align 8, !tbaa !42
  %297 = getelementptr <8 x double>, ptr %229, i64 %294
  store double %296, ptr %297, align 8, !tbaa !42
  %298 = add nuw nsw i64 %281, 4
  %299 = add i64 %282, 4
  %300 = icmp eq i64 %299, %233
  br i1 %300, label %259, label %280, !llvm.loop !153

301:                                              ; preds = %420, %271
  %302 = getelementptr inbounds nuw i8, ptr %156, i64 2560
  %303 = getelementptr inbounds double, ptr %302, i64 %6
  %304 = load double, ptr %303, align 8, !tbaa !42
  %305 = getelementptr inbounds nuw i8, ptr %156, i64 2624
  %306 = getelementptr inbounds double, ptr %305, i64 %6
  %307 = load double, ptr %306, align 8, !tbaa !42
  %308 = getelementptr inbounds nuw i8, ptr %156, i64 2688
  %309 = getelementptr inbounds double, ptr %308, i64 %6
  %310 = load double, ptr %309, align 8, !tbaa !42
  %311 = getelementptr inbounds nuw i8, ptr %156, i64 2752
  %312 = getelementptr inbounds double, ptr %311, i64 %6
  %313 = load double, ptr %312, align 8, !tbaa !42
  %314 = tail call double @llvm.fmuladd.f64(double %223, double %313, double %310)
  %315 = tail call double @llvm.fmuladd.f64(double %223, double %314, double %307)
  %316 = tail call double @llvm.fmuladd.f64(double %223, double %315, double %304)
  %317 = getelementptr inbounds nuw i8, ptr %156, i64 832
  %318 = getelementptr inbounds double, ptr %317, i64 %6
  %319 = load double, ptr %318, align 8, !tbaa !42
  %320 = getelementptr inbounds nuw i8, ptr %156, i64 1408
  %321 = getelementptr inbounds double, ptr %320, i64 %6
  %322 = load double, ptr %321, align 8, !tbaa !42
  %323 = getelementptr inbounds nuw i8, ptr %156, i64 1536
  %324 = getelementptr inbounds double, ptr %323, i64 %6
  %325 = load double, ptr %324, align 8, !tbaa !42
  %326 = fsub double %322, %325
  %327 = fmul double %319, %326
  %328 = getelementptr inbounds nuw i8, ptr %156, i64 2944
  %329 = getelementptr inbounds nuw i8, ptr %156, i64 3712
  %330 = getelementptr inbounds nuw i8, ptr %156, i64 4480
  %331 = getelementptr inbounds nuw i8, ptr %156, i64 896
  %332 = getelementptr inbounds double, ptr %331, i64 %6
  %333 = getelementptr inbounds nuw i8, ptr %156, i64 1024
  %334 = getelementptr inbounds double, ptr %333, i64 %6
  %335 = getelementptr double, ptr %328, i64 %6
  %336 = getelementptr i8, ptr %335, i64 320
  store double 0.000000e+00, ptr %336, align 8, !tbaa !42
  %337 = getelementptr i8, ptr %335, i64 384
  store double 0.000000e+00, ptr %337, align 8, !tbaa !42
  %338 = getelementptr i8, ptr %335, i64 448
  store double 0.000000e+00, ptr %338, align 8, !tbaa !42
  %339 = getelementptr i8, ptr %335, i64 512
  store double 0.000000e+00, ptr %339, align 8, !tbaa !42
  %340 = getelementptr i8, ptr %335, i64 640
  store double 0.000000e+00, ptr %340, align 8, !tbaa !42
  store double %223, ptr %335, align 8, !tbaa !42
  %341 = getelementptr inbounds nuw i8, ptr %156, i64 3008
  %342 = getelementptr inbounds double, ptr %341, i64 %6
  store double %322, ptr %342, align 8, !tbaa !42
  %343 = load double, ptr %332, align 8, !tbaa !42
  %344 = getelementptr inbounds nuw i8, ptr %156, i64 3072
  %345 = getelementptr inbounds double, ptr %344, i64 %6
  store double %343, ptr %345, align 8, !tbaa !42
  %346 = getelementptr inbounds nuw i8, ptr %156, i64 3136
  %347 = getelementptr inbounds double, ptr %346, i64 %6
  store double %327, ptr %347, align 8, !tbaa !42
  %348 = getelementptr inbounds nuw i8, ptr %156, i64 3520
  %349 = getelementptr inbounds double, ptr %348, i64 %6
  store double %222, ptr %349, align 8, !tbaa !42
  %350 = load double, ptr %334, align 8, !tbaa !42
  %351 = getelementptr inbounds nuw i8, ptr %156, i64 3200
  %352 = getelementptr inbounds double, ptr %351, i64 %6
  store double %350, ptr %352, align 8, !tbaa !42
  %353 = getelementptr inbounds nuw i8, ptr %156, i64 3648
  %354 = getelementptr inbounds double, ptr %353, i64 %6
  store double %316, ptr %354, align 8, !tbaa !42
  %355 = getelementptr double, ptr %329, i64 %6
  %356 = getelementptr i8, ptr %355, i64 320
  store double 0.000000e+00, ptr %356, align 8, !tbaa !42
  %357 = getelementptr i8, ptr %355, i64 384
  store double 0.000000e+00, ptr %357, align 8, !tbaa !42
  %358 = getelementptr i8, ptr %355, i64 448
  store double 0.000000e+00, ptr %358, align 8, !tbaa !42
  %359 = getelementptr i8, ptr %355, i64 512
  store double 0.000000e+00, ptr %359, align 8, !tbaa !42
  %360 = getelementptr i8, ptr %355, i64 640
  store double 0.000000e+00, ptr %360, align 8, !tbaa !42
  store double %223, ptr %355, align 8, !tbaa !42
  %361 = getelementptr inbounds nuw i8, ptr %156, i64 3776
  %362 = getelementptr inbounds double, ptr %361, i64 %6
  store double %322, ptr %362, align 8, !tbaa !42
  %363 = getelementptr inbounds nuw i8, ptr %156, i64 3840
  %364 = getelementptr inbounds double, ptr %363, i64 %6
  store double %343, ptr %364, align 8, !tbaa !42
  %365 = getelementptr inbounds nuw i8, ptr %156, i64 3904
  %366 = getelementptr inbounds double, ptr %365, i64 %6
  store double %327, ptr %366, align 8, !tbaa !42
  %367 = getelementptr inbounds nuw i8, ptr %156, i64 4288
  %368 = getelementptr inbounds double, ptr %367, i64 %6
  store double %222, ptr %368, align 8, !tbaa !42
  %369 = getelementptr inbounds nuw i8, ptr %156, i64 3968
  %370 = getelementptr inbounds double, ptr %369, i64 %6
  store double %350, ptr %370, align 8, !tbaa !42
  %371 = getelementptr inbounds nuw i8, ptr %156, i64 4416
  %372 = getelementptr inbounds double, ptr %371, i64 %6
  store double %316, ptr %372, align 8, !tbaa !42
  %373 = getelementptr double, ptr %330, i64 %6
  %374 = getelementptr i8, ptr %373, i64 320
  store double 0.000000e+00, ptr %374, align 8, !tbaa !42
  %375 = getelementptr i8, ptr %373, i64 384
  store double 0.000000e+00, ptr %375, align 8, !tbaa !42
  %376 = getelementptr i8, ptr %373, i64 448
  store double 0.000000e+00, ptr %376, align 8, !tbaa !42
  %377 = getelementptr i8, ptr %373, i64 512
  store double 0.000000e+00, ptr %377, align 8, !tbaa !42
  %378 = getelementptr i8, ptr %373, i64 640
  store double 0.000000e+00, ptr %378, align 8, !tbaa !42
  store double %223, ptr %373, align 8, !tbaa !42
  %379 = load double, ptr %321, align 8, !tbaa !42
  %380 = getelementptr inbounds nuw i8, ptr %156, i64 4544
  %381 = getelementptr inbounds double, ptr %380, i64 %6
  store double %379, ptr %381, align 8, !tbaa !42
  %382 = getelementptr inbounds nuw i8, ptr %156, i64 4608
  %383 = getelementptr inbounds double, ptr %382, i64 %6
  store double %343, ptr %383, align 8, !tbaa !42
  %384 = getelementptr inbounds nuw i8, ptr %156, i64 4672
  %385 = getelementptr inbounds double, ptr %384, i64 %6
  store double %327, ptr %385, align 8, !tbaa !42
  %386 = getelementptr inbounds nuw i8, ptr %156, i64 5056
  %387 = getelementptr inbounds double, ptr %386, i64 %6
  store double %222, ptr %387, align 8, !tbaa !42
  %388 = getelementptr inbounds nuw i8, ptr %156, i64 4736
  %389 = getelementptr inbounds double, ptr %388, i64 %6
  store double %350, ptr %389, align 8, !tbaa !42
  %390 = getelementptr inbounds nuw i8, ptr %156, i64 5184
  %391 = getelementptr inbounds double, ptr %390, i64 %6
  store double %316, ptr %391, align 8, !tbaa !42
  %392 = load double, ptr %332, align 8, !tbaa !42
  %393 = fadd double %327, %392
  %394 = getelementptr inbounds nuw i8, ptr %156, i64 1600
  %395 = getelementptr inbounds double, ptr %394, i64 %6
  store double %393, ptr %395, align 8, !tbaa !42
  %396 = getelementptr inbounds nuw i8, ptr %156, i64 5568
  %397 = getelementptr inbounds nuw i8, ptr %156, i64 6400
  %398 = getelementptr inbounds nuw i8, ptr %156, i64 6464
  %399 = getelementptr inbounds nuw i8, ptr %156, i64 7232
  %400 = getelementptr inbounds double, ptr %396, i64 %6
  store double %222, ptr %400, align 8, !tbaa !42
  %401 = getelementptr inbounds double, ptr %397, i64 %6
  store double %222, ptr %401, align 8, !tbaa !42
  %402 = getelementptr inbounds double, ptr %398, i64 %6
  store double %222, ptr %402, align 8, !tbaa !42
  %403 = getelementptr inbounds double, ptr %399, i64 %6
  store double %222, ptr %403, align 8, !tbaa !42
  %404 = getelementptr inbounds nuw i8, ptr %156, i64 5632
  %405 = getelementptr inbounds nuw i8, ptr %156, i64 5696
  %406 = getelementptr inbounds nuw i8, ptr %156, i64 7296
  %407 = getelementptr inbounds nuw i8, ptr %156, i64 7168
  %408 = getelementptr inbounds nuw i8, ptr %156, i64 6848
  %409 = getelementptr inbounds double, ptr %404, i64 %6
  store double 0.000000e+00, ptr %409, align 8, !tbaa !42
  %410 = getelementptr inbounds double, ptr %405, i64 %6
  store double 0.000000e+00, ptr %410, align 8, !tbaa !42
  %411 = getelementptr inbounds double, ptr %406, i64 %6
  store double 0.000000e+00, ptr %411, align 8, !tbaa !42
  %412 = getelementptr inbounds double, ptr %407, i64 %6
  store double 0.000000e+00, ptr %412, align 8, !tbaa !42
  %413 = getelementptr inbounds double, ptr %408, i64 %6
  store double 0.000000e+00, ptr %413, align 8, !tbaa !42
  %414 = getelementptr inbounds nuw i8, ptr %156, i64 7360
  %415 = getelementptr inbounds i64, ptr %414, i64 %6
  store i64 0, ptr %415, align 8, !tbaa !29
  %416 = getelementptr inbounds nuw i8, ptr %156, i64 7424
  %417 = getelementptr inbounds i64, ptr %416, i64 %6
  store i64 -1, ptr %417, align 8, !tbaa !29
  %418 = getelementptr inbounds nuw i8, ptr %156, i64 7488
  %419 = getelementptr inbounds i64, ptr %418, i64 %6
  store i64 0, ptr %419, align 8, !tbaa !29
  br i1 %177, label %442, label %458

420:                                              ; preds = %275, %420
  %421 = phi i64 [ 0, %275 ], [ %440, %420 ]
  %422 = icmp slt i64 %421, %162
  %423 = select i1 %422, double %276, double 1.000000e+00
  %424 = shl i64 %421, 8
  %425 = getelementptr i8, ptr %279, i64 %424
  %426 = load double, ptr %425, align 8, !tbaa !42
  %427 = fmul double %423, %426
  store double %427, ptr %425, align 8, !tbaa !42
  %428 = fdiv double %423, %223
  %429 = getelementptr i8, ptr %425, i64 64
  %430 = load double, ptr %429, align 8, !tbaa !42
  %431 = fmul double %428, %430
  store double %431, ptr %429, align 8, !tbaa !42
  %432 = fdiv double %428, %223
  %433 = getelementptr i8, ptr %425, i64 128
  %434 = load double, ptr %433, align 8, !tbaa !42
  %435 = fmul double %432, %434
  store double %435, ptr %433, align 8, !tbaa !42
  %436 = fdiv double %432, %223
  %437 = getelementptr i8, ptr %425, i64 192
  %438 = load double, ptr %437, align 8, !tbaa !42
  %439 = fmul double %436, %438
  store double %439, ptr %437, align 8, !tbaa !42
  %440 = add nuw nsw i64 %421, 1
  %441 = icmp slt i64 %421, %157
  br i1 %441, label %420, label %301, !llvm.loop !154

442:                                              ; preds = %301
  %443 = getelementptr inbounds nuw i8, ptr %156, i64 7576
  %444 = load ptr, ptr %443, align 8, !tbaa !57
  %445 = getelementptr double, ptr %444, i64 %6
  %446 = getelementptr inbounds nuw i8, ptr %156, i64 7568
  %447 = load ptr, ptr %446, align 16, !tbaa !46
  %448 = getelementptr double, ptr %447, i64 %6
  %449 = getelementptr inbounds nuw i8, ptr %156, i64 7560
  %450 = load ptr, ptr %449, align 8, !tbaa !58
  %451 = getelementptr double, ptr %450, i64 %6
  %452 = getelementptr inbounds nuw i8, ptr %156, i64 7600
  %453 = load ptr, ptr %452, align 16, !tbaa !47
  %454 = getelementptr double, ptr %453, i64 %6
  %455 = getelementptr inbounds nuw i8, ptr %156, i64 7592
  %456 = load ptr, ptr %455, align 8, !tbaa !61
  %457 = getelementptr double, ptr %456, i64 %6
  br label %471

458:                                              ; preds = %471, %301
  %459 = icmp slt i64 %158, 0
  br i1 %459, label %532, label %460

460:                                              ; preds = %458
  %461 = getelementptr inbounds nuw i8, ptr %156, i64 7744
  %462 = load ptr, ptr %461, align 64, !tbaa !64
  %463 = getelementptr double, ptr %462, i64 %6
  %464 = getelementptr inbounds nuw i8, ptr %156, i64 7736
  %465 = load ptr, ptr %464, align 8, !tbaa !49
  %466 = getelementptr double, ptr %465, i64 %6
  %467 = icmp eq i64 %158, 0
  br i1 %467, label %480, label %468

468:                                              ; preds = %460
  %469 = add nuw i64 %158, 1
  %470 = and i64 %469, -2
  br label %505

471:                                              ; preds = %442, %471
  %472 = phi i64 [ 0, %442 ], [ %478, %471 ]
  %473 = getelementptr <8 x double>, ptr %445, i64 %472
  store double %222, ptr %473, align 8, !tbaa !42
  %474 = getelementptr <8 x double>, ptr %448, i64 %472
  store double %222, ptr %474, align 8, !tbaa !42
  %475 = getelementptr <8 x double>, ptr %451, i64 %472
  store double %222, ptr %475, align 8, !tbaa !42
  %476 = getelementptr <8 x double>, ptr %454, i64 %472
  store double 1.000000e+00, ptr %476, align 8, !tbaa !42
  %477 = getelementptr <8 x double>, ptr %457, i64 %472
  store double 1.000000e+00, ptr %477, align 8, !tbaa !42
  %478 = add nuw nsw i64 %472, 1
  %479 = icmp eq i64 %478, %157
  br i1 %479, label %458, label %471, !llvm.loop !155

480:                                              ; preds = %519, %460
  %481 = phi i64 [ 0, %460 ], [ %523, %519 ]
  %482 = and i64 %158, 1
  %483 = icmp eq i64 %482, 0
  br i1 %483, label %484, label %492

484:                                              ; preds = %480
  %485 = icmp slt i64 %481, %158
  br i1 %485, label %488, label %486

486:                                              ; preds = %484
  %487 = load double, ptr %321, align 8, !tbaa !42
  br label %488

488:                                              ; preds = %486, %484
  %489 = phi double [ %487, %486 ], [ %316, %484 ]
  %490 = getelementptr <8 x double>, ptr %463, i64 %481
  store double %489, ptr %490, align 8, !tbaa !42
  %491 = getelementptr <8 x double>, ptr %466, i64 %481
  store double %489, ptr %491, align 8, !tbaa !42
  br label %492

492:                                              ; preds = %480, %488
  %493 = icmp eq i64 %158, 0
  br i1 %493, label %532, label %494

494:                                              ; preds = %492
  %495 = getelementptr inbounds nuw i8, ptr %156, i64 7696
  %496 = load ptr, ptr %495, align 16, !tbaa !65
  %497 = getelementptr double, ptr %496, i64 %6
  %498 = getelementptr inbounds nuw i8, ptr %156, i64 7688
  %499 = load ptr, ptr %498, align 8, !tbaa !50
  %500 = getelementptr double, ptr %499, i64 %6
  %501 = and i64 %158, 1
  %502 = icmp eq i64 %158, 1
  br i1 %502, label %526, label %503

503:                                              ; preds = %494
  %504 = and i64 %158, 9223372036854775806
  br label %536

505:                                              ; preds = %519, %468
  %506 = phi i64 [ 0, %468 ], [ %523, %519 ]
  %507 = phi i64 [ 0, %468 ], [ %524, %519 ]
  %508 = icmp slt i64 %506, %158
  br i1 %508, label %511, label %509

509:                                              ; preds = %505
  %510 = load double, ptr %321, align 8, !tbaa !42
  br label %511

511:                                              ; preds = %505, %509
  %512 = phi double [ %510, %509 ], [ %316, %505 ]
  %513 = getelementptr <8 x double>, ptr %463, i64 %506
  store double %512, ptr %513, align 8, !tbaa !42
  %514 = getelementptr <8 x double>, ptr %466, i64 %506
  store double %512, ptr %514, align 8, !tbaa !42
  %515 = or disjoint i64 %506, 1
  %516 = icmp slt i64 %515, %158
  br i1 %516, label %519, label %517

517:                                              ; preds = %511
  %518 = load double, ptr %321, align 8, !tbaa !42
  br label %519

519:                                              ; preds = %517, %511
  %520 = phi double [ %518, %517 ], [ %316, %511 ]
  %521 = getelementptr <8 x double>, ptr %463, i64 %515
  store double %520, ptr %521, align 8, !tbaa !42
  %522 = getelementptr <8 x double>, ptr %466, i64 %515
  store double %520, ptr %522, align 8, !tbaa !42
  %523 = add nuw i64 %506, 2
  %524 = add i64 %507, 2
  %525 = icmp eq i64 %524, %470
  br i1 %525, label %480, label %505, !llvm.loop !156

526:                                              ; preds = %536, %494
  %527 = phi i64 [ 0, %494 ], [ %544, %536 ]
  %528 = icmp eq i64 %501, 0
  br i1 %528, label %532, label %529

529:                                              ; preds = %526
  %530 = getelementptr <8 x double>, ptr %497, i64 %527
  store double %222, ptr %530, align 8, !tbaa !42
  %531 = getelementptr <8 x double>, ptr %500, i64 %527
  store double %222, ptr %531, align 8, !tbaa !42
  br label %532

532:                                              ; preds = %529, %526, %458, %492
  %533 = add nuw nsw i64 %155, 1
  %534 = load i64, ptr %27, align 64, !tbaa !16
  %535 = icmp slt i64 %533, %534
  br i1 %535, label %153, label %60, !llvm.loop !157

536:                                              ; preds = %536, %503
  %537 = phi i64 [ 0, %503 ], [ %544, %536 ]
  %538 = phi i64 [ 0, %503 ], [ %545, %536 ]
  %539 = getelementptr <8 x double>, ptr %497, i64 %537
  store double %222, ptr %539, align 8, !tbaa !42
  %540 = getelementptr <8 x double>, ptr %500, i64 %537
  store double %222, ptr %540, align 8, !tbaa !42
  %541 = or disjoint i64 %537, 1
  %542 = getelementptr <8 x double>, ptr %497, i64 %541
  store double %222, ptr %542, align 8, !tbaa !42
  %543 = getelementptr <8 x double>, ptr %500, i64 %541
  store double %222, ptr %543, align 8, !tbaa !42
  %544 = add nuw nsw i64 %537, 2
  %545 = add i64 %538, 2
  %546 = icmp eq i64 %545, %504
  br i1 %546, label %526, label %536, !llvm.loop !158
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <8 x double> @llvm.fmuladd.v8f64(<8 x double>, <8 x double>, <8 x double>) #4

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #4

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 64 dereferenceable(5968) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 -2147483648, 8) %2) unnamed_addr #2 {
  %4 = alloca <8 x i64>, align 64
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !159
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !160
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 5568
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
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 5888
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
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 5960
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
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 5504
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
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 5960
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
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 5440
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
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 5504
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
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 2304, !6, i64 2312, !6, i64 2320, !6, i64 2328, !6, i64 2336, !7, i64 2368, !7, i64 2432, !7, i64 2816, !7, i64 3200, !7, i64 3584, !7, i64 3648, !7, i64 3712, !7, i64 3776, !7, i64 3840, !7, i64 3904, !7, i64 3968, !7, i64 4032, !7, i64 4096, !7, i64 4160, !7, i64 4224, !7, i64 4288, !7, i64 4352, !7, i64 4416, !7, i64 4480, !7, i64 4544, !7, i64 4608, !7, i64 4672, !7, i64 4736, !7, i64 4800, !7, i64 4864, !7, i64 4928, !7, i64 4992, !7, i64 5056, !7, i64 5120, !7, i64 5184, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5824, !7, i64 5888, !11, i64 5952, !19, i64 5960}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 2312}
!21 = !{!17, !6, i64 2320}
!22 = !{!5, !6, i64 32}
!23 = !{!17, !6, i64 2328}
!24 = !{!5, !9, i64 64}
!25 = !{!7, !7, i64 0}
!26 = !{!17, !6, i64 2336}
!27 = !{!17, !19, i64 5960}
!28 = !{!5, !12, i64 152}
!29 = !{!6, !6, i64 0}
!30 = !{!31, !6, i64 7552}
!31 = !{!"_ZTS5Piece", !32, i64 0, !7, i64 2944, !7, i64 3712, !7, i64 4480, !7, i64 5248, !7, i64 5312, !7, i64 5376, !7, i64 5440, !7, i64 5504, !7, i64 5568, !7, i64 5632, !7, i64 5696, !7, i64 5760, !7, i64 5824, !7, i64 5888, !7, i64 5952, !7, i64 6016, !7, i64 6080, !7, i64 6144, !7, i64 6208, !7, i64 6272, !7, i64 6336, !7, i64 6400, !7, i64 6464, !7, i64 6528, !7, i64 6592, !7, i64 6656, !7, i64 6720, !7, i64 6784, !7, i64 6848, !7, i64 6912, !7, i64 6976, !7, i64 7040, !7, i64 7104, !7, i64 7168, !7, i64 7232, !7, i64 7296, !7, i64 7360, !7, i64 7424, !7, i64 7488, !6, i64 7552, !11, i64 7560, !11, i64 7568, !11, i64 7576, !11, i64 7584, !11, i64 7592, !11, i64 7600, !11, i64 7608, !11, i64 7616, !11, i64 7624, !11, i64 7632, !11, i64 7640, !11, i64 7648, !11, i64 7656, !11, i64 7664, !11, i64 7672, !11, i64 7680, !11, i64 7688, !11, i64 7696, !11, i64 7704, !11, i64 7712, !11, i64 7720, !11, i64 7728, !11, i64 7736, !11, i64 7744}
!32 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 64, !7, i64 128, !7, i64 192, !7, i64 256, !7, i64 320, !7, i64 384, !7, i64 448, !7, i64 512, !7, i64 576, !7, i64 640, !7, i64 704, !7, i64 768, !7, i64 832, !7, i64 896, !7, i64 960, !7, i64 1024, !7, i64 1088, !7, i64 1152, !7, i64 1216, !7, i64 1280, !7, i64 1344, !7, i64 1408, !7, i64 1472, !7, i64 1536, !7, i64 1600, !7, i64 1664, !7, i64 1728, !7, i64 1792, !7, i64 1856, !7, i64 1920, !7, i64 1984, !7, i64 2048, !7, i64 2112, !7, i64 2176, !7, i64 2240, !7, i64 2304, !7, i64 2368, !7, i64 2432, !7, i64 2496, !7, i64 2560, !7, i64 2624, !7, i64 2688, !7, i64 2752, !7, i64 2816, !7, i64 2880}
!33 = !{!11, !11, i64 0}
!34 = !{!31, !11, i64 7672}
!35 = distinct !{!35, !36}
!36 = !{!"llvm.loop.mustprogress"}
!37 = !{!17, !11, i64 5952}
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
