; Made by scripts/lanes.py from sources of sha256 9c4b69f1393fc4f1cb7d20e5878ee19a60b60d5a4e43b7007d23d4f7d8bd762c.
%struct.Piece = type <{ %struct.PieceGiven, [12 x <2 x double>], [12 x <2 x double>], [12 x <2 x double>], <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x i64>, <2 x i64>, <2 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [8 x i8] }>
%struct.PieceGiven = type { <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double> }

; Function Attrs: mustprogress nofree norecurse nosync nounwind willreturn memory(argmem: read)
define i64 @work_space_2(ptr nocapture noundef readonly %0) local_unnamed_addr #0 {
  %2 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %3 = load i64, ptr %2, align 8, !tbaa !4
  %4 = mul i64 %3, 18
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %6 = load i64, ptr %5, align 8, !tbaa !13
  %7 = mul i64 %6, 9
  %8 = add i64 %7, %4
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %10 = load i64, ptr %9, align 8, !tbaa !14
  %11 = shl i64 %8, 4
  %12 = add i64 %11, 2592
  %13 = mul i64 %12, %10
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %15 = load i64, ptr %14, align 8, !tbaa !15
  %16 = shl i64 %15, 4
  %17 = add i64 %16, 1600
  %18 = add i64 %17, %13
  ret i64 %18
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind willreturn memory(argmem: readwrite)
declare void @llvm.lifetime.start.p0(i64 immarg, ptr nocapture) #1

; Function Attrs: mustprogress nocallback nofree nosync nounwind willreturn memory(argmem: readwrite)
declare void @llvm.lifetime.end.p0(i64 immarg, ptr nocapture) #1

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define range(i64 0, 2) i64 @march_2(ptr nocapture noundef %0, ptr noundef %1, i64 noundef %2) local_unnamed_addr #2 {
  %4 = alloca <2 x double>, align 16
  %5 = alloca <2 x double>, align 16
  %6 = icmp eq i64 %2, 0
  br i1 %6, label %121, label %7

7:                                                ; preds = %3
  %8 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %9 = load i64, ptr %8, align 8, !tbaa !14
  %10 = getelementptr inbounds nuw i8, ptr %1, i64 576
  store i64 %9, ptr %10, align 16, !tbaa !16
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %12 = load i64, ptr %11, align 8, !tbaa !4
  %13 = getelementptr inbounds nuw i8, ptr %1, i64 584
  store i64 %12, ptr %13, align 8, !tbaa !20
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %15 = load i64, ptr %14, align 8, !tbaa !13
  %16 = getelementptr inbounds nuw i8, ptr %1, i64 592
  store i64 %15, ptr %16, align 16, !tbaa !21
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %18 = load i64, ptr %17, align 8, !tbaa !22
  %19 = getelementptr inbounds nuw i8, ptr %1, i64 600
  store i64 %18, ptr %19, align 8, !tbaa !23
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %21 = load double, ptr %20, align 8, !tbaa !24
  %22 = insertelement <2 x double> poison, double %21, i64 0
  %23 = shufflevector <2 x double> %22, <2 x double> poison, <2 x i32> zeroinitializer
  %24 = getelementptr inbounds nuw i8, ptr %1, i64 624
  store <2 x double> %23, ptr %24, align 16, !tbaa !25
  %25 = getelementptr inbounds nuw i8, ptr %1, i64 608
  store i64 0, ptr %25, align 16, !tbaa !26
  %26 = getelementptr inbounds nuw i8, ptr %1, i64 1520
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 1512
  store ptr %26, ptr %27, align 8, !tbaa !27
  %28 = getelementptr inbounds %struct.Piece, ptr %26, i64 %9
  %29 = icmp sgt i64 %9, 0
  br i1 %29, label %30, label %104

30:                                               ; preds = %7
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %32 = add nsw i64 %12, 1
  br label %33

33:                                               ; preds = %33, %30
  %34 = phi ptr [ %28, %30 ], [ %101, %33 ]
  %35 = phi i64 [ 0, %30 ], [ %102, %33 ]
  %36 = load ptr, ptr %27, align 8, !tbaa !27
  %37 = getelementptr inbounds nuw %struct.Piece, ptr %36, i64 %35
  %38 = load ptr, ptr %31, align 8, !tbaa !28
  %39 = getelementptr inbounds nuw i64, ptr %38, i64 %35
  %40 = load i64, ptr %39, align 8, !tbaa !29
  %41 = getelementptr inbounds nuw i8, ptr %37, i64 1888
  store i64 %40, ptr %41, align 16, !tbaa !30
  %42 = getelementptr inbounds nuw i8, ptr %37, i64 1896
  %43 = getelementptr inbounds nuw i8, ptr %37, i64 1904
  %44 = getelementptr inbounds nuw i8, ptr %37, i64 1912
  %45 = getelementptr inbounds nuw i8, ptr %37, i64 1920
  %46 = getelementptr inbounds nuw i8, ptr %37, i64 1928
  %47 = getelementptr inbounds nuw i8, ptr %37, i64 1936
  %48 = getelementptr inbounds nuw i8, ptr %37, i64 1944
  %49 = getelementptr inbounds nuw i8, ptr %37, i64 1952
  %50 = getelementptr inbounds nuw i8, ptr %37, i64 1960
  %51 = getelementptr inbounds nuw i8, ptr %37, i64 1968
  %52 = getelementptr inbounds nuw i8, ptr %37, i64 1976
  %53 = getelementptr inbounds nuw i8, ptr %37, i64 1984
  %54 = getelementptr inbounds nuw i8, ptr %37, i64 1992
  %55 = getelementptr inbounds nuw i8, ptr %37, i64 2000
  store ptr %34, ptr %42, align 8, !tbaa !33
  %56 = getelementptr inbounds <2 x double>, ptr %34, i64 %12
  store ptr %56, ptr %43, align 8, !tbaa !33
  %57 = getelementptr inbounds <2 x double>, ptr %56, i64 %12
  store ptr %57, ptr %44, align 8, !tbaa !33
  %58 = getelementptr inbounds <2 x double>, ptr %57, i64 %12
  store ptr %58, ptr %45, align 8, !tbaa !33
  %59 = getelementptr inbounds <2 x double>, ptr %58, i64 %12
  store ptr %59, ptr %46, align 8, !tbaa !33
  %60 = getelementptr inbounds <2 x double>, ptr %59, i64 %12
  store ptr %60, ptr %47, align 8, !tbaa !33
  %61 = getelementptr inbounds <2 x double>, ptr %60, i64 %12
  store ptr %61, ptr %48, align 8, !tbaa !33
  %62 = getelementptr inbounds <2 x double>, ptr %61, i64 %12
  store ptr %62, ptr %49, align 8, !tbaa !33
  %63 = getelementptr inbounds <2 x double>, ptr %62, i64 %12
  store ptr %63, ptr %50, align 8, !tbaa !33
  %64 = getelementptr inbounds <2 x double>, ptr %63, i64 %12
  store ptr %64, ptr %51, align 8, !tbaa !33
  %65 = getelementptr inbounds <2 x double>, ptr %64, i64 %12
  store ptr %65, ptr %52, align 8, !tbaa !33
  %66 = getelementptr inbounds <2 x double>, ptr %65, i64 %12
  store ptr %66, ptr %53, align 8, !tbaa !33
  %67 = getelementptr inbounds <2 x double>, ptr %66, i64 %12
  store ptr %67, ptr %54, align 8, !tbaa !33
  %68 = getelementptr inbounds <2 x double>, ptr %67, i64 %12
  store ptr %68, ptr %55, align 8, !tbaa !33
  %69 = getelementptr inbounds <2 x double>, ptr %68, i64 %12
  %70 = getelementptr inbounds nuw i8, ptr %37, i64 2008
  store ptr %69, ptr %70, align 8, !tbaa !34
  %71 = icmp eq i64 %40, 0
  %72 = select i1 %71, i64 0, i64 2
  %73 = shl i64 %32, %72
  %74 = getelementptr inbounds <2 x double>, ptr %69, i64 %73
  %75 = getelementptr inbounds nuw i8, ptr %37, i64 2016
  %76 = getelementptr inbounds nuw i8, ptr %37, i64 2024
  %77 = getelementptr inbounds nuw i8, ptr %37, i64 2032
  %78 = getelementptr inbounds nuw i8, ptr %37, i64 2040
  %79 = getelementptr inbounds nuw i8, ptr %37, i64 2048
  %80 = getelementptr inbounds nuw i8, ptr %37, i64 2056
  %81 = getelementptr inbounds nuw i8, ptr %37, i64 2064
  %82 = getelementptr inbounds nuw i8, ptr %37, i64 2072
  %83 = getelementptr inbounds nuw i8, ptr %37, i64 2080
  store ptr %74, ptr %75, align 8, !tbaa !33
  %84 = getelementptr <2 x double>, ptr %74, i64 %15
  %85 = getelementptr i8, ptr %84, i64 16
  store ptr %85, ptr %76, align 8, !tbaa !33
  %86 = getelementptr <2 x double>, ptr %85, i64 %15
  %87 = getelementptr i8, ptr %86, i64 16
  store ptr %87, ptr %77, align 8, !tbaa !33
  %88 = getelementptr <2 x double>, ptr %87, i64 %15
  %89 = getelementptr i8, ptr %88, i64 16
  store ptr %89, ptr %78, align 8, !tbaa !33
  %90 = getelementptr <2 x double>, ptr %89, i64 %15
  %91 = getelementptr i8, ptr %90, i64 16
  store ptr %91, ptr %79, align 8, !tbaa !33
  %92 = getelementptr <2 x double>, ptr %91, i64 %15
  %93 = getelementptr i8, ptr %92, i64 16
  store ptr %93, ptr %80, align 8, !tbaa !33
  %94 = getelementptr <2 x double>, ptr %93, i64 %15
  %95 = getelementptr i8, ptr %94, i64 16
  store ptr %95, ptr %81, align 8, !tbaa !33
  %96 = getelementptr <2 x double>, ptr %95, i64 %15
  %97 = getelementptr i8, ptr %96, i64 16
  store ptr %97, ptr %82, align 8, !tbaa !33
  %98 = getelementptr <2 x double>, ptr %97, i64 %15
  %99 = getelementptr i8, ptr %98, i64 16
  store ptr %99, ptr %83, align 8, !tbaa !33
  %100 = getelementptr <2 x double>, ptr %99, i64 %15
  %101 = getelementptr i8, ptr %100, i64 16
  %102 = add nuw nsw i64 %35, 1
  %103 = icmp eq i64 %102, %9
  br i1 %103, label %104, label %33, !llvm.loop !35

104:                                              ; preds = %33, %7
  %105 = phi ptr [ %28, %7 ], [ %101, %33 ]
  %106 = getelementptr inbounds nuw i8, ptr %1, i64 1504
  store ptr %105, ptr %106, align 16, !tbaa !37
  %107 = load i64, ptr %0, align 8, !tbaa !38
  %108 = icmp sgt i64 %107, 0
  br i1 %108, label %109, label %110

109:                                              ; preds = %104
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %113

110:                                              ; preds = %104
  %111 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  %112 = getelementptr inbounds nuw i8, ptr %1, i64 1344
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #7
  store i64 0, ptr %112, align 8, !tbaa !29
  store i64 0, ptr %111, align 8, !tbaa !29
  br label %113

113:                                              ; preds = %110, %109
  %114 = load i64, ptr %25, align 16, !tbaa !26
  %115 = load i64, ptr %0, align 8, !tbaa !38
  %116 = icmp slt i64 %114, %115
  br i1 %116, label %120, label %117

117:                                              ; preds = %113
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, i64 noundef 0) #7
  %118 = getelementptr inbounds nuw i8, ptr %1, i64 1352
  store i64 0, ptr %118, align 8, !tbaa !29
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 1368
  store i64 0, ptr %119, align 8, !tbaa !29
  br label %121

120:                                              ; preds = %113
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %121

121:                                              ; preds = %117, %120, %3
  %122 = getelementptr inbounds nuw i8, ptr %1, i64 1344
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %125 = load i64, ptr %123, align 8, !tbaa !39
  %126 = load i64, ptr %124, align 8, !tbaa !40
  %127 = sub nsw i64 %125, %126
  %128 = icmp slt i64 %127, 4
  br i1 %128, label %4739, label %129

129:                                              ; preds = %121
  %130 = getelementptr inbounds nuw i8, ptr %1, i64 1488
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 584
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 592
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 1136
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 1168
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 1232
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 1312
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 1512
  %142 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 608
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 416
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 480
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 496
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 976
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 1280
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 1056
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 1120
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 1264
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 1008
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 992
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 1392
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 944
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 1328
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 368
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 352
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 528
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 400
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 304
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 288
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 224
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 240
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 208
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 272
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 1184
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 1072
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 16
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 32
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 624
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 600
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 1248
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 1200
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 432
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 1296
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 1104
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 464
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 1504
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 1040
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %223 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %226 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 544
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 1432
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 1480
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 1416
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 1480
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 1496
  br label %263

263:                                              ; preds = %520, %129
  %264 = phi i1 [ true, %129 ], [ %523, %520 ]
  %265 = phi i64 [ 0, %129 ], [ %521, %520 ]
  %266 = phi i1 [ true, %129 ], [ %522, %520 ]
  %267 = getelementptr inbounds nuw i64, ptr %122, i64 %265
  %268 = load i64, ptr %267, align 8, !tbaa !29
  %269 = icmp eq i64 %268, 0
  br i1 %269, label %518, label %270

270:                                              ; preds = %263
  %271 = getelementptr inbounds nuw [2 x double], ptr %130, i64 0, i64 %265
  %272 = load double, ptr %271, align 8, !tbaa !41
  %273 = fcmp oeq double %272, 0.000000e+00
  br i1 %273, label %518, label %274

274:                                              ; preds = %270
  %275 = load i64, ptr %131, align 8, !tbaa !20
  %276 = load i64, ptr %132, align 16, !tbaa !21
  %277 = getelementptr inbounds nuw [2 x i64], ptr %133, i64 0, i64 %265
  %278 = load i64, ptr %277, align 8, !tbaa !29
  %279 = load ptr, ptr %134, align 8, !tbaa !42
  %280 = mul nsw i64 %278, 40
  %281 = getelementptr inbounds i8, ptr %279, i64 %280
  %282 = getelementptr inbounds nuw double, ptr %135, i64 %265
  %283 = load double, ptr %282, align 8, !tbaa !41
  store double %283, ptr %281, align 8, !tbaa !41
  %284 = getelementptr inbounds nuw double, ptr %136, i64 %265
  %285 = load double, ptr %284, align 8, !tbaa !41
  %286 = getelementptr inbounds nuw i8, ptr %281, i64 8
  store double %285, ptr %286, align 8, !tbaa !41
  %287 = getelementptr inbounds nuw double, ptr %137, i64 %265
  %288 = load double, ptr %287, align 8, !tbaa !41
  %289 = getelementptr inbounds nuw i8, ptr %281, i64 16
  store double %288, ptr %289, align 8, !tbaa !41
  %290 = getelementptr inbounds nuw double, ptr %138, i64 %265
  %291 = load double, ptr %290, align 8, !tbaa !41
  %292 = getelementptr inbounds nuw i8, ptr %281, i64 24
  store double %291, ptr %292, align 8, !tbaa !41
  %293 = getelementptr inbounds nuw double, ptr %139, i64 %265
  %294 = load double, ptr %293, align 8, !tbaa !41
  %295 = getelementptr inbounds nuw i8, ptr %281, i64 32
  store double %294, ptr %295, align 8, !tbaa !41
  %296 = load i64, ptr %140, align 16, !tbaa !16
  %297 = icmp sgt i64 %296, 0
  br i1 %297, label %298, label %502

298:                                              ; preds = %274
  %299 = load ptr, ptr %141, align 8, !tbaa !27
  %300 = load ptr, ptr %142, align 8, !tbaa !43
  %301 = mul nsw i64 %296, %278
  %302 = mul i64 %275, 3
  %303 = load ptr, ptr %143, align 8, !tbaa !44
  %304 = icmp sgt i64 %275, 0
  %305 = getelementptr inbounds nuw double, ptr %4, i64 %265
  %306 = shl i64 %275, 4
  %307 = getelementptr inbounds nuw double, ptr %5, i64 %265
  %308 = icmp sgt i64 %276, 0
  %309 = and i64 %276, 1
  %310 = icmp eq i64 %276, 1
  %311 = and i64 %276, 9223372036854775806
  %312 = icmp eq i64 %309, 0
  br label %313

313:                                              ; preds = %410, %298
  %314 = phi i64 [ 0, %298 ], [ %477, %410 ]
  %315 = getelementptr inbounds nuw %struct.Piece, ptr %299, i64 %314
  %316 = getelementptr inbounds nuw i8, ptr %315, i64 384
  %317 = getelementptr inbounds nuw double, ptr %316, i64 %265
  %318 = load double, ptr %317, align 8, !tbaa !41
  %319 = getelementptr inbounds nuw i8, ptr %315, i64 1088
  %320 = getelementptr inbounds nuw double, ptr %319, i64 %265
  %321 = load double, ptr %320, align 8, !tbaa !41
  %322 = add nsw i64 %314, %301
  %323 = mul i64 %302, %322
  %324 = getelementptr inbounds double, ptr %300, i64 %323
  %325 = mul nsw i64 %322, 40
  %326 = getelementptr inbounds i8, ptr %303, i64 %325
  br i1 %304, label %327, label %344

327:                                              ; preds = %313
  %328 = getelementptr inbounds nuw i8, ptr %315, i64 1904
  %329 = load ptr, ptr %328, align 16, !tbaa !45
  %330 = getelementptr inbounds nuw i8, ptr %315, i64 1936
  %331 = load ptr, ptr %330, align 16, !tbaa !46
  %332 = getelementptr inbounds nuw double, ptr %331, i64 %265
  %333 = getelementptr double, ptr %324, i64 %275
  %334 = getelementptr inbounds nuw i8, ptr %315, i64 1104
  %335 = getelementptr inbounds nuw i8, ptr %315, i64 1992
  %336 = load ptr, ptr %335, align 8, !tbaa !47
  %337 = getelementptr inbounds nuw i8, ptr %315, i64 1888
  %338 = load i64, ptr %337, align 16, !tbaa !30
  %339 = getelementptr inbounds nuw i8, ptr %315, i64 96
  %340 = getelementptr inbounds nuw i8, ptr %315, i64 112
  %341 = getelementptr inbounds nuw i8, ptr %315, i64 128
  %342 = getelementptr inbounds nuw i8, ptr %315, i64 160
  %343 = getelementptr i8, ptr %324, i64 %306
  br label %357

344:                                              ; preds = %386, %313
  %345 = phi double [ %321, %313 ], [ %393, %386 ]
  br i1 %308, label %346, label %410

346:                                              ; preds = %344
  %347 = getelementptr inbounds nuw i8, ptr %315, i64 2072
  %348 = load ptr, ptr %347, align 8, !tbaa !48
  %349 = getelementptr inbounds nuw double, ptr %348, i64 %265
  %350 = getelementptr inbounds nuw i8, ptr %315, i64 192
  %351 = getelementptr inbounds nuw double, ptr %350, i64 %265
  %352 = load double, ptr %351, align 8, !tbaa !41
  %353 = getelementptr inbounds nuw i8, ptr %315, i64 2024
  %354 = load ptr, ptr %353, align 8, !tbaa !49
  %355 = getelementptr inbounds nuw double, ptr %354, i64 %265
  %356 = load double, ptr %349, align 8, !tbaa !41
  br i1 %310, label %396, label %479

357:                                              ; preds = %386, %327
  %358 = phi double [ %321, %327 ], [ %393, %386 ]
  %359 = phi i64 [ 0, %327 ], [ %394, %386 ]
  %360 = getelementptr inbounds nuw <2 x double>, ptr %329, i64 %359
  %361 = getelementptr inbounds nuw double, ptr %360, i64 %265
  %362 = load double, ptr %361, align 8, !tbaa !41
  %363 = getelementptr inbounds nuw double, ptr %324, i64 %359
  store double %362, ptr %363, align 8, !tbaa !41
  %364 = getelementptr inbounds nuw <2 x double>, ptr %332, i64 %359
  %365 = load double, ptr %364, align 8, !tbaa !41
  %366 = getelementptr double, ptr %333, i64 %359
  store double %365, ptr %366, align 8, !tbaa !41
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  %367 = load <2 x double>, ptr %334, align 16, !tbaa !25
  %368 = getelementptr inbounds nuw <2 x double>, ptr %336, i64 %359
  %369 = load <2 x double>, ptr %368, align 16, !tbaa !25
  %370 = icmp slt i64 %359, %338
  %371 = load <2 x double>, ptr %316, align 16
  %372 = fsub <2 x double> %367, %371
  %373 = select i1 %370, <2 x double> %371, <2 x double> %372
  %374 = fmul <2 x double> %369, %373
  store <2 x double> %374, ptr %4, align 16, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %5) #8
  %375 = load <2 x double>, ptr %360, align 16, !tbaa !25
  br i1 %370, label %376, label %378

376:                                              ; preds = %357
  %377 = load <2 x double>, ptr %342, align 16, !tbaa !25
  br label %386

378:                                              ; preds = %357
  %379 = load <2 x double>, ptr %339, align 16, !tbaa !25
  %380 = load <2 x double>, ptr %340, align 16, !tbaa !25
  %381 = load <2 x double>, ptr %341, align 16, !tbaa !25
  %382 = fmul <2 x double> %375, %381
  %383 = fmul <2 x double> %382, splat (double 0x3FD5555555555555)
  %384 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %380, <2 x double> splat (double 5.000000e-01), <2 x double> %383)
  %385 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %375, <2 x double> %384, <2 x double> %379)
  br label %386

386:                                              ; preds = %378, %376
  %387 = phi <2 x double> [ %377, %376 ], [ %385, %378 ]
  %388 = fmul <2 x double> %375, %387
  %389 = fmul <2 x double> %374, %388
  store <2 x double> %389, ptr %5, align 16, !tbaa !25
  %390 = load double, ptr %305, align 8, !tbaa !41
  %391 = getelementptr double, ptr %343, i64 %359
  store double %390, ptr %391, align 8, !tbaa !41
  %392 = load double, ptr %307, align 8, !tbaa !41
  %393 = fadd double %358, %392
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #8
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  %394 = add nuw nsw i64 %359, 1
  %395 = icmp eq i64 %394, %275
  br i1 %395, label %344, label %357, !llvm.loop !50

396:                                              ; preds = %479, %346
  %397 = phi double [ poison, %346 ], [ %499, %479 ]
  %398 = phi double [ %356, %346 ], [ %494, %479 ]
  %399 = phi double [ %345, %346 ], [ %499, %479 ]
  %400 = phi i64 [ 0, %346 ], [ %492, %479 ]
  br i1 %312, label %410, label %401

401:                                              ; preds = %396
  %402 = getelementptr <2 x double>, ptr %349, i64 %400
  %403 = getelementptr i8, ptr %402, i64 16
  %404 = load double, ptr %403, align 8, !tbaa !41
  %405 = fsub double %404, %398
  %406 = fmul double %352, %405
  %407 = getelementptr inbounds nuw <2 x double>, ptr %355, i64 %400
  %408 = load double, ptr %407, align 8, !tbaa !41
  %409 = tail call double @llvm.fmuladd.f64(double %406, double %408, double %399)
  br label %410

410:                                              ; preds = %401, %396, %344
  %411 = phi double [ %345, %344 ], [ %397, %396 ], [ %409, %401 ]
  %412 = getelementptr inbounds nuw i8, ptr %315, i64 240
  %413 = getelementptr inbounds nuw double, ptr %412, i64 %265
  %414 = load double, ptr %413, align 8, !tbaa !41
  %415 = getelementptr inbounds nuw i8, ptr %315, i64 96
  %416 = getelementptr inbounds nuw double, ptr %415, i64 %265
  %417 = load double, ptr %416, align 8, !tbaa !41
  %418 = getelementptr inbounds nuw i8, ptr %315, i64 112
  %419 = getelementptr inbounds nuw double, ptr %418, i64 %265
  %420 = load double, ptr %419, align 8, !tbaa !41
  %421 = getelementptr inbounds nuw i8, ptr %315, i64 128
  %422 = getelementptr inbounds nuw double, ptr %421, i64 %265
  %423 = load double, ptr %422, align 8, !tbaa !41
  %424 = fmul double %414, %423
  %425 = fdiv double %424, 3.000000e+00
  %426 = tail call double @llvm.fmuladd.f64(double %420, double 5.000000e-01, double %425)
  %427 = tail call double @llvm.fmuladd.f64(double %414, double %426, double %417)
  %428 = fmul double %414, %427
  %429 = getelementptr inbounds nuw i8, ptr %315, i64 352
  %430 = getelementptr inbounds nuw double, ptr %429, i64 %265
  %431 = load double, ptr %430, align 8, !tbaa !41
  %432 = fsub double %431, %318
  %433 = getelementptr inbounds nuw i8, ptr %315, i64 160
  %434 = getelementptr inbounds nuw double, ptr %433, i64 %265
  %435 = load double, ptr %434, align 8, !tbaa !41
  %436 = fmul double %318, %435
  %437 = fmul double %414, %436
  %438 = tail call double @llvm.fmuladd.f64(double %432, double %428, double %437)
  %439 = getelementptr inbounds nuw i8, ptr %315, i64 1024
  %440 = getelementptr inbounds nuw double, ptr %439, i64 %265
  %441 = load double, ptr %440, align 8, !tbaa !41
  %442 = getelementptr inbounds nuw i8, ptr %315, i64 1040
  %443 = getelementptr inbounds nuw double, ptr %442, i64 %265
  %444 = load double, ptr %443, align 8, !tbaa !41
  %445 = fsub double %441, %444
  %446 = fsub double %411, %438
  %447 = fsub double %445, %446
  %448 = fcmp ogt double %441, 0.000000e+00
  %449 = fneg double %441
  %450 = select i1 %448, double %441, double %449
  %451 = fcmp ogt double %444, 0.000000e+00
  %452 = fneg double %444
  %453 = select i1 %451, double %444, double %452
  %454 = fadd double %450, %453
  %455 = fcmp ogt double %447, 0.000000e+00
  %456 = fneg double %447
  %457 = select i1 %455, double %447, double %456
  %458 = fcmp ogt double %454, 1.000000e+00
  %459 = select i1 %458, double %454, double 1.000000e+00
  %460 = fdiv double %457, %459
  store double %460, ptr %326, align 8, !tbaa !41
  %461 = getelementptr inbounds nuw i8, ptr %315, i64 1008
  %462 = getelementptr inbounds nuw double, ptr %461, i64 %265
  %463 = load double, ptr %462, align 8, !tbaa !41
  %464 = getelementptr inbounds nuw i8, ptr %326, i64 8
  store double %463, ptr %464, align 8, !tbaa !41
  %465 = getelementptr inbounds nuw i8, ptr %315, i64 960
  %466 = getelementptr inbounds nuw double, ptr %465, i64 %265
  %467 = load double, ptr %466, align 8, !tbaa !41
  %468 = getelementptr inbounds nuw i8, ptr %326, i64 16
  store double %467, ptr %468, align 8, !tbaa !41
  %469 = getelementptr inbounds nuw i8, ptr %315, i64 976
  %470 = getelementptr inbounds nuw double, ptr %469, i64 %265
  %471 = load double, ptr %470, align 8, !tbaa !41
  %472 = getelementptr inbounds nuw i8, ptr %326, i64 24
  store double %471, ptr %472, align 8, !tbaa !41
  %473 = getelementptr inbounds nuw i8, ptr %315, i64 944
  %474 = getelementptr inbounds nuw double, ptr %473, i64 %265
  %475 = load double, ptr %474, align 8, !tbaa !41
  %476 = getelementptr inbounds nuw i8, ptr %326, i64 32
  store double %475, ptr %476, align 8, !tbaa !41
  %477 = add nuw nsw i64 %314, 1
  %478 = icmp eq i64 %477, %296
  br i1 %478, label %502, label %313, !llvm.loop !51

479:                                              ; preds = %346, %479
  %480 = phi double [ %494, %479 ], [ %356, %346 ]
  %481 = phi double [ %499, %479 ], [ %345, %346 ]
  %482 = phi i64 [ %492, %479 ], [ 0, %346 ]
  %483 = phi i64 [ %500, %479 ], [ 0, %346 ]
  %484 = or disjoint i64 %482, 1
  %485 = getelementptr inbounds nuw <2 x double>, ptr %349, i64 %484
  %486 = load double, ptr %485, align 8, !tbaa !41
  %487 = fsub double %486, %480
  %488 = fmul double %352, %487
  %489 = getelementptr inbounds nuw <2 x double>, ptr %355, i64 %482
  %490 = load double, ptr %489, align 8, !tbaa !41
  %491 = tail call double @llvm.fmuladd.f64(double %488, double %490, double %481)
  %492 = add nuw nsw i64 %482, 2
  %493 = getelementptr inbounds nuw <2 x double>, ptr %349, i64 %492
  %494 = load double, ptr %493, align 8, !tbaa !41
  %495 = fsub double %494, %486
  %496 = fmul double %352, %495
  %497 = getelementptr inbounds nuw <2 x double>, ptr %355, i64 %484
  %498 = load double, ptr %497, align 8, !tbaa !41
  %499 = tail call double @llvm.fmuladd.f64(double %496, double %498, double %491)
  %500 = add i64 %483, 2
  %501 = icmp eq i64 %500, %311
  br i1 %501, label %396, label %479, !llvm.loop !52

502:                                              ; preds = %410, %274
  %503 = load i64, ptr %144, align 16, !tbaa !26
  %504 = load i64, ptr %0, align 8, !tbaa !38
  %505 = icmp slt i64 %503, %504
  br i1 %505, label %508, label %506

506:                                              ; preds = %502
  store i64 0, ptr %267, align 8, !tbaa !29
  %507 = getelementptr inbounds nuw i64, ptr %145, i64 %265
  store i64 0, ptr %507, align 8, !tbaa !29
  br label %515

508:                                              ; preds = %502
  %509 = trunc nuw nsw i64 %265 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %509) #7
  %510 = load i64, ptr %267, align 8, !tbaa !29
  %511 = icmp eq i64 %510, 0
  br i1 %511, label %515, label %512

512:                                              ; preds = %508
  %513 = load double, ptr %271, align 8, !tbaa !41
  %514 = fcmp oeq double %513, 0.000000e+00
  br label %515

515:                                              ; preds = %506, %512, %508
  %516 = phi i1 [ true, %508 ], [ %514, %512 ], [ true, %506 ]
  %517 = and i1 %266, %516
  br label %518

518:                                              ; preds = %515, %270, %263
  %519 = phi i1 [ %266, %270 ], [ %517, %515 ], [ %266, %263 ]
  br i1 %264, label %520, label %524

520:                                              ; preds = %518, %525
  %521 = phi i64 [ 1, %518 ], [ 0, %525 ]
  %522 = phi i1 [ %519, %518 ], [ true, %525 ]
  %523 = xor i1 %264, true
  br label %263, !llvm.loop !53

524:                                              ; preds = %518
  br i1 %519, label %530, label %525

525:                                              ; preds = %4720, %4738, %4735, %3122, %3445, %524
  %526 = load i64, ptr %123, align 8, !tbaa !39
  %527 = load i64, ptr %124, align 8, !tbaa !40
  %528 = sub nsw i64 %526, %527
  %529 = icmp slt i64 %528, 4
  br i1 %529, label %4739, label %520

530:                                              ; preds = %524
  %531 = load <2 x i64>, ptr %122, align 16, !tbaa !25
  %532 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %531)
  %533 = icmp eq i64 %532, 0
  br i1 %533, label %4739, label %534

534:                                              ; preds = %530
  %535 = load <2 x i64>, ptr %145, align 16, !tbaa !25
  %536 = and <2 x i64> %535, %531
  %537 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %536)
  %538 = icmp eq i64 %537, 0
  %539 = load i64, ptr %140, align 16, !tbaa !16
  br i1 %538, label %1107, label %540

540:                                              ; preds = %534
  %541 = load <2 x double>, ptr %146, align 16, !tbaa !25
  %542 = load <2 x double>, ptr %147, align 16, !tbaa !25
  %543 = fcmp olt <2 x double> %541, %542
  %544 = select <2 x i1> %543, <2 x double> %541, <2 x double> %542
  %545 = load <2 x double>, ptr %148, align 16, !tbaa !25
  %546 = load <2 x double>, ptr %149, align 16, !tbaa !25
  %547 = load <2 x double>, ptr %150, align 16, !tbaa !25
  %548 = load <2 x double>, ptr %151, align 16, !tbaa !25
  %549 = fsub <2 x double> %547, %548
  %550 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %546, <2 x double> %549, <2 x double> %545)
  %551 = fcmp olt <2 x double> %544, %550
  %552 = select <2 x i1> %551, <2 x double> %544, <2 x double> %550
  %553 = load <2 x double>, ptr %152, align 16, !tbaa !25
  %554 = load <2 x double>, ptr %153, align 16, !tbaa !25
  %555 = fadd <2 x double> %553, %554
  %556 = fsub <2 x double> %555, %547
  %557 = fmul <2 x double> %552, splat (double 0x3FF000010C6F7A0B)
  %558 = fcmp ole <2 x double> %556, %557
  %559 = load <2 x double>, ptr %154, align 16, !tbaa !25
  %560 = fcmp ogt <2 x double> %559, %552
  %561 = select <2 x i1> %560, <2 x double> %559, <2 x double> %552
  %562 = icmp ne <2 x i64> %536, zeroinitializer
  %563 = select <2 x i1> %558, <2 x i1> %562, <2 x i1> zeroinitializer
  %564 = select <2 x i1> %563, <2 x double> %561, <2 x double> %559
  store <2 x double> %564, ptr %154, align 16, !tbaa !25
  %565 = fmul <2 x double> %552, splat (double 2.000000e+00)
  %566 = fcmp uge <2 x double> %556, %565
  %567 = fmul <2 x double> %556, splat (double 5.000000e-01)
  %568 = select <2 x i1> %566, <2 x double> %552, <2 x double> %567
  %569 = select <2 x i1> %558, <2 x double> %556, <2 x double> %568
  %570 = icmp sgt i64 %539, 0
  %571 = load <2 x double>, ptr %155, align 16, !tbaa !25
  br i1 %570, label %572, label %619

572:                                              ; preds = %540
  %573 = load ptr, ptr %141, align 8, !tbaa !27
  br label %574

574:                                              ; preds = %572, %574
  %575 = phi <2 x double> [ %569, %572 ], [ %616, %574 ]
  %576 = phi i64 [ 0, %572 ], [ %617, %574 ]
  %577 = getelementptr inbounds nuw %struct.Piece, ptr %573, i64 %576
  %578 = getelementptr inbounds nuw i8, ptr %577, i64 944
  %579 = load <2 x double>, ptr %578, align 16, !tbaa !25
  %580 = getelementptr inbounds nuw i8, ptr %577, i64 368
  %581 = load <2 x double>, ptr %580, align 16, !tbaa !25
  %582 = fsub <2 x double> %579, %581
  %583 = getelementptr inbounds nuw i8, ptr %577, i64 208
  %584 = load <2 x double>, ptr %583, align 16, !tbaa !25
  %585 = fmul <2 x double> %582, %584
  %586 = getelementptr inbounds nuw i8, ptr %577, i64 400
  %587 = load <2 x double>, ptr %586, align 16, !tbaa !25
  %588 = getelementptr inbounds nuw i8, ptr %577, i64 1008
  %589 = load <2 x double>, ptr %588, align 16, !tbaa !25
  %590 = fsub <2 x double> %587, %589
  %591 = getelementptr inbounds nuw i8, ptr %577, i64 1840
  %592 = load <2 x i64>, ptr %591, align 16, !tbaa !25
  %593 = getelementptr inbounds nuw i8, ptr %577, i64 1824
  %594 = load <2 x double>, ptr %593, align 16, !tbaa !25
  %595 = fcmp une <2 x double> %594, splat (double 1.000000e+00)
  %596 = select <2 x i1> %595, <2 x double> %585, <2 x double> %590
  %597 = getelementptr inbounds nuw i8, ptr %577, i64 960
  %598 = load <2 x double>, ptr %597, align 16, !tbaa !25
  %599 = icmp eq <2 x i64> %592, zeroinitializer
  %600 = select <2 x i1> %599, <2 x double> %598, <2 x double> %596
  %601 = getelementptr inbounds nuw i8, ptr %577, i64 1408
  %602 = load <2 x double>, ptr %601, align 16, !tbaa !25
  %603 = getelementptr inbounds nuw i8, ptr %577, i64 1792
  %604 = load <2 x double>, ptr %603, align 16, !tbaa !25
  %605 = fdiv <2 x double> %604, %571
  %606 = select <2 x i1> %599, <2 x double> %605, <2 x double> zeroinitializer
  %607 = fsub <2 x double> %602, %606
  %608 = fcmp ule <2 x double> %600, zeroinitializer
  %609 = fcmp ule <2 x double> %607, zeroinitializer
  %610 = or <2 x i1> %608, %609
  %611 = fdiv <2 x double> %600, %607
  %612 = fcmp ogt <2 x double> %611, splat (double 1.000000e-03)
  %613 = select <2 x i1> %612, <2 x double> %611, <2 x double> splat (double 1.000000e-03)
  %614 = fcmp olt <2 x double> %575, %613
  %615 = select <2 x i1> %610, <2 x i1> splat (i1 true), <2 x i1> %614
  %616 = select <2 x i1> %615, <2 x double> %575, <2 x double> %613
  %617 = add nuw nsw i64 %576, 1
  %618 = icmp eq i64 %617, %539
  br i1 %618, label %619, label %574, !llvm.loop !54

619:                                              ; preds = %574, %540
  %620 = phi <2 x double> [ %569, %540 ], [ %616, %574 ]
  %621 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %622 = icmp eq <2 x i64> %536, zeroinitializer
  %623 = select <2 x i1> %622, <2 x double> %621, <2 x double> %620
  store <2 x double> %623, ptr %156, align 16, !tbaa !25
  %624 = load <2 x i64>, ptr %157, align 16, !tbaa !25
  %625 = fdiv <2 x double> %623, %571
  %626 = fdiv <2 x double> splat (double 1.000000e+00), %623
  %627 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %625, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %628 = fadd <2 x double> %625, splat (double 1.000000e+00)
  %629 = fdiv <2 x double> %627, %628
  %630 = fmul <2 x double> %626, %629
  %631 = icmp eq <2 x i64> %624, zeroinitializer
  %632 = select <2 x i1> %631, <2 x double> %630, <2 x double> %626
  %633 = fneg <2 x double> %626
  %634 = fneg <2 x double> %628
  %635 = fmul <2 x double> %626, %634
  %636 = select <2 x i1> %631, <2 x double> %635, <2 x double> %633
  %637 = fmul <2 x double> %625, %625
  %638 = fdiv <2 x double> %637, %628
  %639 = fmul <2 x double> %626, %638
  %640 = select <2 x i1> %631, <2 x double> %639, <2 x double> zeroinitializer
  %641 = load <2 x double>, ptr %158, align 16, !tbaa !25
  %642 = select <2 x i1> %622, <2 x double> %641, <2 x double> %632
  store <2 x double> %642, ptr %158, align 16, !tbaa !25
  %643 = load <2 x double>, ptr %159, align 16, !tbaa !25
  %644 = select <2 x i1> %622, <2 x double> %643, <2 x double> %636
  store <2 x double> %644, ptr %159, align 16, !tbaa !25
  %645 = load <2 x double>, ptr %160, align 16, !tbaa !25
  %646 = select <2 x i1> %622, <2 x double> %645, <2 x double> %640
  store <2 x double> %646, ptr %160, align 16, !tbaa !25
  %647 = select <2 x i1> %631, <2 x double> %625, <2 x double> zeroinitializer
  %648 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %649 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %650 = fsub <2 x double> %648, %649
  %651 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %647, <2 x double> %650, <2 x double> %648)
  %652 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %653 = select <2 x i1> %622, <2 x double> %652, <2 x double> %651
  store <2 x double> %653, ptr %161, align 16, !tbaa !25
  %654 = load <2 x double>, ptr %230, align 16, !tbaa !25
  %655 = load <2 x double>, ptr %231, align 16, !tbaa !25
  %656 = fsub <2 x double> %654, %655
  %657 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %647, <2 x double> %656, <2 x double> %654)
  %658 = load <2 x double>, ptr %229, align 16, !tbaa !25
  %659 = select <2 x i1> %622, <2 x double> %658, <2 x double> %657
  store <2 x double> %659, ptr %229, align 16, !tbaa !25
  %660 = load <2 x double>, ptr %233, align 16, !tbaa !25
  %661 = load <2 x double>, ptr %234, align 16, !tbaa !25
  %662 = fsub <2 x double> %660, %661
  %663 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %647, <2 x double> %662, <2 x double> %660)
  %664 = load <2 x double>, ptr %232, align 16, !tbaa !25
  %665 = select <2 x i1> %622, <2 x double> %664, <2 x double> %663
  store <2 x double> %665, ptr %232, align 16, !tbaa !25
  %666 = load <2 x double>, ptr %236, align 16, !tbaa !25
  %667 = load <2 x double>, ptr %237, align 16, !tbaa !25
  %668 = fsub <2 x double> %666, %667
  %669 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %647, <2 x double> %668, <2 x double> %666)
  %670 = load <2 x double>, ptr %235, align 16, !tbaa !25
  %671 = select <2 x i1> %622, <2 x double> %670, <2 x double> %669
  store <2 x double> %671, ptr %235, align 16, !tbaa !25
  %672 = load <2 x double>, ptr %239, align 16, !tbaa !25
  %673 = load <2 x double>, ptr %240, align 16, !tbaa !25
  %674 = fsub <2 x double> %672, %673
  %675 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %647, <2 x double> %674, <2 x double> %672)
  %676 = load <2 x double>, ptr %238, align 16, !tbaa !25
  %677 = select <2 x i1> %622, <2 x double> %676, <2 x double> %675
  store <2 x double> %677, ptr %238, align 16, !tbaa !25
  %678 = load <2 x double>, ptr %242, align 16, !tbaa !25
  %679 = load <2 x double>, ptr %243, align 16, !tbaa !25
  %680 = fsub <2 x double> %678, %679
  %681 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %647, <2 x double> %680, <2 x double> %678)
  %682 = load <2 x double>, ptr %241, align 16, !tbaa !25
  %683 = select <2 x i1> %622, <2 x double> %682, <2 x double> %681
  store <2 x double> %683, ptr %241, align 16, !tbaa !25
  br i1 %570, label %684, label %1094

684:                                              ; preds = %619, %1057
  %685 = phi i64 [ %1058, %1057 ], [ 0, %619 ]
  %686 = load ptr, ptr %141, align 8, !tbaa !27
  %687 = getelementptr inbounds nuw %struct.Piece, ptr %686, i64 %685
  %688 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %689 = load <2 x double>, ptr %155, align 16, !tbaa !25
  %690 = getelementptr inbounds nuw i8, ptr %687, i64 1856
  %691 = load <2 x i64>, ptr %690, align 16, !tbaa !25
  %692 = fdiv <2 x double> %688, %689
  %693 = fdiv <2 x double> splat (double 1.000000e+00), %688
  %694 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %692, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %695 = fadd <2 x double> %692, splat (double 1.000000e+00)
  %696 = fdiv <2 x double> %694, %695
  %697 = fmul <2 x double> %693, %696
  %698 = icmp eq <2 x i64> %691, zeroinitializer
  %699 = select <2 x i1> %698, <2 x double> %697, <2 x double> %693
  %700 = fneg <2 x double> %693
  %701 = fneg <2 x double> %695
  %702 = fmul <2 x double> %693, %701
  %703 = select <2 x i1> %698, <2 x double> %702, <2 x double> %700
  %704 = fmul <2 x double> %692, %692
  %705 = fdiv <2 x double> %704, %695
  %706 = fmul <2 x double> %693, %705
  %707 = select <2 x i1> %698, <2 x double> %706, <2 x double> zeroinitializer
  %708 = getelementptr inbounds nuw i8, ptr %687, i64 1312
  %709 = load <2 x double>, ptr %708, align 16, !tbaa !25
  %710 = select <2 x i1> %622, <2 x double> %709, <2 x double> %699
  store <2 x double> %710, ptr %708, align 16, !tbaa !25
  %711 = getelementptr inbounds nuw i8, ptr %687, i64 1328
  %712 = load <2 x double>, ptr %711, align 16, !tbaa !25
  %713 = select <2 x i1> %622, <2 x double> %712, <2 x double> %703
  store <2 x double> %713, ptr %711, align 16, !tbaa !25
  %714 = getelementptr inbounds nuw i8, ptr %687, i64 1344
  %715 = load <2 x double>, ptr %714, align 16, !tbaa !25
  %716 = select <2 x i1> %622, <2 x double> %715, <2 x double> %707
  store <2 x double> %716, ptr %714, align 16, !tbaa !25
  %717 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %718 = load <2 x double>, ptr %155, align 16, !tbaa !25
  %719 = fdiv <2 x double> %717, %718
  %720 = select <2 x i1> %698, <2 x double> %719, <2 x double> zeroinitializer
  %721 = getelementptr inbounds nuw i8, ptr %687, i64 736
  %722 = getelementptr inbounds nuw i8, ptr %687, i64 928
  %723 = getelementptr inbounds nuw i8, ptr %687, i64 1120
  %724 = load <2 x double>, ptr %722, align 16, !tbaa !25
  %725 = load <2 x double>, ptr %723, align 16, !tbaa !25
  %726 = fsub <2 x double> %724, %725
  %727 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %726, <2 x double> %724)
  %728 = load <2 x double>, ptr %721, align 16, !tbaa !25
  %729 = select <2 x i1> %622, <2 x double> %728, <2 x double> %727
  store <2 x double> %729, ptr %721, align 16, !tbaa !25
  %730 = getelementptr inbounds nuw i8, ptr %687, i64 752
  %731 = getelementptr inbounds nuw i8, ptr %687, i64 944
  %732 = load <2 x double>, ptr %731, align 16, !tbaa !25
  %733 = getelementptr inbounds nuw i8, ptr %687, i64 1136
  %734 = load <2 x double>, ptr %733, align 16, !tbaa !25
  %735 = fsub <2 x double> %732, %734
  %736 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %735, <2 x double> %732)
  %737 = load <2 x double>, ptr %730, align 16, !tbaa !25
  %738 = select <2 x i1> %622, <2 x double> %737, <2 x double> %736
  store <2 x double> %738, ptr %730, align 16, !tbaa !25
  %739 = getelementptr inbounds nuw i8, ptr %687, i64 768
  %740 = getelementptr inbounds nuw i8, ptr %687, i64 960
  %741 = load <2 x double>, ptr %740, align 16, !tbaa !25
  %742 = getelementptr inbounds nuw i8, ptr %687, i64 1152
  %743 = load <2 x double>, ptr %742, align 16, !tbaa !25
  %744 = fsub <2 x double> %741, %743
  %745 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %744, <2 x double> %741)
  %746 = load <2 x double>, ptr %739, align 16, !tbaa !25
  %747 = select <2 x i1> %622, <2 x double> %746, <2 x double> %745
  store <2 x double> %747, ptr %739, align 16, !tbaa !25
  %748 = getelementptr inbounds nuw i8, ptr %687, i64 784
  %749 = getelementptr inbounds nuw i8, ptr %687, i64 976
  %750 = load <2 x double>, ptr %749, align 16, !tbaa !25
  %751 = getelementptr inbounds nuw i8, ptr %687, i64 1168
  %752 = load <2 x double>, ptr %751, align 16, !tbaa !25
  %753 = fsub <2 x double> %750, %752
  %754 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %753, <2 x double> %750)
  %755 = load <2 x double>, ptr %748, align 16, !tbaa !25
  %756 = select <2 x i1> %622, <2 x double> %755, <2 x double> %754
  store <2 x double> %756, ptr %748, align 16, !tbaa !25
  %757 = getelementptr inbounds nuw i8, ptr %687, i64 800
  %758 = getelementptr inbounds nuw i8, ptr %687, i64 992
  %759 = load <2 x double>, ptr %758, align 16, !tbaa !25
  %760 = getelementptr inbounds nuw i8, ptr %687, i64 1184
  %761 = load <2 x double>, ptr %760, align 16, !tbaa !25
  %762 = fsub <2 x double> %759, %761
  %763 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %762, <2 x double> %759)
  %764 = load <2 x double>, ptr %757, align 16, !tbaa !25
  %765 = select <2 x i1> %622, <2 x double> %764, <2 x double> %763
  store <2 x double> %765, ptr %757, align 16, !tbaa !25
  %766 = getelementptr inbounds nuw i8, ptr %687, i64 816
  %767 = getelementptr inbounds nuw i8, ptr %687, i64 1008
  %768 = load <2 x double>, ptr %767, align 16, !tbaa !25
  %769 = getelementptr inbounds nuw i8, ptr %687, i64 1200
  %770 = load <2 x double>, ptr %769, align 16, !tbaa !25
  %771 = fsub <2 x double> %768, %770
  %772 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %771, <2 x double> %768)
  %773 = load <2 x double>, ptr %766, align 16, !tbaa !25
  %774 = select <2 x i1> %622, <2 x double> %773, <2 x double> %772
  store <2 x double> %774, ptr %766, align 16, !tbaa !25
  %775 = getelementptr inbounds nuw i8, ptr %687, i64 832
  %776 = getelementptr inbounds nuw i8, ptr %687, i64 1024
  %777 = load <2 x double>, ptr %776, align 16, !tbaa !25
  %778 = getelementptr inbounds nuw i8, ptr %687, i64 1216
  %779 = load <2 x double>, ptr %778, align 16, !tbaa !25
  %780 = fsub <2 x double> %777, %779
  %781 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %780, <2 x double> %777)
  %782 = load <2 x double>, ptr %775, align 16, !tbaa !25
  %783 = select <2 x i1> %622, <2 x double> %782, <2 x double> %781
  store <2 x double> %783, ptr %775, align 16, !tbaa !25
  %784 = getelementptr inbounds nuw i8, ptr %687, i64 848
  %785 = getelementptr inbounds nuw i8, ptr %687, i64 1040
  %786 = load <2 x double>, ptr %785, align 16, !tbaa !25
  %787 = getelementptr inbounds nuw i8, ptr %687, i64 1232
  %788 = load <2 x double>, ptr %787, align 16, !tbaa !25
  %789 = fsub <2 x double> %786, %788
  %790 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %789, <2 x double> %786)
  %791 = load <2 x double>, ptr %784, align 16, !tbaa !25
  %792 = select <2 x i1> %622, <2 x double> %791, <2 x double> %790
  store <2 x double> %792, ptr %784, align 16, !tbaa !25
  %793 = getelementptr inbounds nuw i8, ptr %687, i64 864
  %794 = getelementptr inbounds nuw i8, ptr %687, i64 1056
  %795 = load <2 x double>, ptr %794, align 16, !tbaa !25
  %796 = getelementptr inbounds nuw i8, ptr %687, i64 1248
  %797 = load <2 x double>, ptr %796, align 16, !tbaa !25
  %798 = fsub <2 x double> %795, %797
  %799 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %798, <2 x double> %795)
  %800 = load <2 x double>, ptr %793, align 16, !tbaa !25
  %801 = select <2 x i1> %622, <2 x double> %800, <2 x double> %799
  store <2 x double> %801, ptr %793, align 16, !tbaa !25
  %802 = getelementptr inbounds nuw i8, ptr %687, i64 880
  %803 = getelementptr inbounds nuw i8, ptr %687, i64 1072
  %804 = load <2 x double>, ptr %803, align 16, !tbaa !25
  %805 = getelementptr inbounds nuw i8, ptr %687, i64 1264
  %806 = load <2 x double>, ptr %805, align 16, !tbaa !25
  %807 = fsub <2 x double> %804, %806
  %808 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %807, <2 x double> %804)
  %809 = load <2 x double>, ptr %802, align 16, !tbaa !25
  %810 = select <2 x i1> %622, <2 x double> %809, <2 x double> %808
  store <2 x double> %810, ptr %802, align 16, !tbaa !25
  %811 = getelementptr inbounds nuw i8, ptr %687, i64 896
  %812 = getelementptr inbounds nuw i8, ptr %687, i64 1088
  %813 = load <2 x double>, ptr %812, align 16, !tbaa !25
  %814 = getelementptr inbounds nuw i8, ptr %687, i64 1280
  %815 = load <2 x double>, ptr %814, align 16, !tbaa !25
  %816 = fsub <2 x double> %813, %815
  %817 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %816, <2 x double> %813)
  %818 = load <2 x double>, ptr %811, align 16, !tbaa !25
  %819 = select <2 x i1> %622, <2 x double> %818, <2 x double> %817
  store <2 x double> %819, ptr %811, align 16, !tbaa !25
  %820 = load <2 x double>, ptr %721, align 16, !tbaa !25
  %821 = load <2 x double>, ptr %722, align 16, !tbaa !25
  %822 = fcmp olt <2 x double> %820, %821
  %823 = select <2 x i1> %822, <2 x double> %820, <2 x double> %821
  %824 = load <2 x double>, ptr %687, align 16, !tbaa !25
  %825 = fmul <2 x double> %824, splat (double 3.000000e-01)
  %826 = fcmp ogt <2 x double> %823, %825
  %827 = select <2 x i1> %826, <2 x double> %823, <2 x double> %825
  %828 = select <2 x i1> %622, <2 x double> %820, <2 x double> %827
  store <2 x double> %828, ptr %721, align 16, !tbaa !25
  %829 = getelementptr inbounds nuw i8, ptr %687, i64 1408
  %830 = fcmp ogt <2 x double> %801, zeroinitializer
  %831 = select <2 x i1> %830, <2 x double> %801, <2 x double> zeroinitializer
  %832 = load <2 x double>, ptr %829, align 16, !tbaa !25
  %833 = select <2 x i1> %622, <2 x double> %832, <2 x double> %831
  store <2 x double> %833, ptr %829, align 16, !tbaa !25
  %834 = load i64, ptr %131, align 8, !tbaa !20
  %835 = icmp sgt i64 %834, 0
  br i1 %835, label %836, label %850

836:                                              ; preds = %684
  %837 = getelementptr inbounds nuw i8, ptr %687, i64 1904
  %838 = getelementptr inbounds nuw i8, ptr %687, i64 1912
  %839 = getelementptr inbounds nuw i8, ptr %687, i64 1896
  %840 = getelementptr inbounds nuw i8, ptr %687, i64 1104
  %841 = getelementptr inbounds nuw i8, ptr %687, i64 1992
  %842 = getelementptr inbounds nuw i8, ptr %687, i64 1888
  %843 = getelementptr inbounds nuw i8, ptr %687, i64 384
  %844 = getelementptr inbounds nuw i8, ptr %687, i64 1296
  %845 = getelementptr inbounds nuw i8, ptr %687, i64 96
  %846 = getelementptr inbounds nuw i8, ptr %687, i64 112
  %847 = getelementptr inbounds nuw i8, ptr %687, i64 128
  %848 = getelementptr inbounds nuw i8, ptr %687, i64 160
  %849 = getelementptr inbounds nuw i8, ptr %687, i64 1920
  br label %860

850:                                              ; preds = %915, %684
  %851 = load i64, ptr %132, align 16, !tbaa !21
  %852 = icmp sgt i64 %851, 0
  br i1 %852, label %853, label %928

853:                                              ; preds = %850
  %854 = getelementptr inbounds nuw i8, ptr %687, i64 2072
  %855 = getelementptr inbounds nuw i8, ptr %687, i64 2024
  %856 = getelementptr inbounds nuw i8, ptr %687, i64 2080
  %857 = getelementptr inbounds nuw i8, ptr %687, i64 2032
  %858 = getelementptr inbounds nuw i8, ptr %687, i64 192
  %859 = getelementptr inbounds nuw i8, ptr %687, i64 2040
  br label %1061

860:                                              ; preds = %836, %915
  %861 = phi i64 [ 0, %836 ], [ %925, %915 ]
  %862 = load ptr, ptr %837, align 16, !tbaa !45
  %863 = getelementptr inbounds nuw <2 x double>, ptr %862, i64 %861
  %864 = load <2 x double>, ptr %863, align 16, !tbaa !25
  %865 = load ptr, ptr %838, align 8, !tbaa !55
  %866 = getelementptr inbounds nuw <2 x double>, ptr %865, i64 %861
  %867 = load <2 x double>, ptr %866, align 16, !tbaa !25
  %868 = fsub <2 x double> %864, %867
  %869 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> %868, <2 x double> %864)
  %870 = load ptr, ptr %839, align 8, !tbaa !56
  %871 = getelementptr inbounds nuw <2 x double>, ptr %870, i64 %861
  %872 = load <2 x double>, ptr %871, align 16, !tbaa !25
  %873 = select <2 x i1> %622, <2 x double> %872, <2 x double> %869
  store <2 x double> %873, ptr %871, align 16, !tbaa !25
  %874 = load <2 x double>, ptr %840, align 16, !tbaa !25
  %875 = load ptr, ptr %841, align 8, !tbaa !47
  %876 = getelementptr inbounds nuw <2 x double>, ptr %875, i64 %861
  %877 = load <2 x double>, ptr %876, align 16, !tbaa !25
  %878 = load i64, ptr %842, align 16, !tbaa !30
  %879 = icmp slt i64 %861, %878
  %880 = load <2 x double>, ptr %843, align 16
  %881 = fsub <2 x double> %874, %880
  %882 = select i1 %879, <2 x double> %880, <2 x double> %881
  %883 = fmul <2 x double> %877, %882
  %884 = load <2 x double>, ptr %844, align 16, !tbaa !25
  %885 = fsub <2 x double> %884, %880
  %886 = select i1 %879, <2 x double> %880, <2 x double> %885
  %887 = fmul <2 x double> %877, %886
  %888 = load <2 x double>, ptr %711, align 16, !tbaa !25
  %889 = fmul <2 x double> %888, %883
  %890 = load ptr, ptr %837, align 16, !tbaa !45
  %891 = getelementptr inbounds nuw <2 x double>, ptr %890, i64 %861
  %892 = load <2 x double>, ptr %891, align 16, !tbaa !25
  br i1 %879, label %893, label %899

893:                                              ; preds = %860
  %894 = load <2 x double>, ptr %848, align 16, !tbaa !25
  %895 = load ptr, ptr %838, align 8, !tbaa !55
  %896 = getelementptr inbounds nuw <2 x double>, ptr %895, i64 %861
  %897 = load <2 x double>, ptr %896, align 16, !tbaa !25
  %898 = fmul <2 x double> %897, %894
  br label %915

899:                                              ; preds = %860
  %900 = load <2 x double>, ptr %845, align 16, !tbaa !25
  %901 = load <2 x double>, ptr %846, align 16, !tbaa !25
  %902 = load <2 x double>, ptr %847, align 16, !tbaa !25
  %903 = fmul <2 x double> %892, %902
  %904 = fmul <2 x double> %903, splat (double 0x3FD5555555555555)
  %905 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %901, <2 x double> splat (double 5.000000e-01), <2 x double> %904)
  %906 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %892, <2 x double> %905, <2 x double> %900)
  %907 = load ptr, ptr %838, align 8, !tbaa !55
  %908 = getelementptr inbounds nuw <2 x double>, ptr %907, i64 %861
  %909 = load <2 x double>, ptr %908, align 16, !tbaa !25
  %910 = fmul <2 x double> %909, %902
  %911 = fmul <2 x double> %910, splat (double 0x3FD5555555555555)
  %912 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %901, <2 x double> splat (double 5.000000e-01), <2 x double> %911)
  %913 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %909, <2 x double> %912, <2 x double> %900)
  %914 = fmul <2 x double> %909, %913
  br label %915

915:                                              ; preds = %893, %899
  %916 = phi <2 x double> [ %894, %893 ], [ %906, %899 ]
  %917 = phi <2 x double> [ %898, %893 ], [ %914, %899 ]
  %918 = fmul <2 x double> %892, %916
  %919 = load <2 x double>, ptr %714, align 16, !tbaa !25
  %920 = fmul <2 x double> %887, %919
  %921 = fmul <2 x double> %917, %920
  %922 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %889, <2 x double> %918, <2 x double> %921)
  %923 = load ptr, ptr %849, align 16, !tbaa !57
  %924 = getelementptr inbounds nuw <2 x double>, ptr %923, i64 %861
  store <2 x double> %922, ptr %924, align 16, !tbaa !25
  %925 = add nuw nsw i64 %861, 1
  %926 = load i64, ptr %131, align 8, !tbaa !20
  %927 = icmp slt i64 %925, %926
  br i1 %927, label %860, label %850, !llvm.loop !58

928:                                              ; preds = %1061, %850
  %929 = getelementptr inbounds nuw i8, ptr %687, i64 416
  %930 = load <2 x double>, ptr %929, align 16, !tbaa !25
  %931 = fcmp ogt <2 x double> %930, zeroinitializer
  %932 = bitcast <2 x i1> %931 to i2
  %933 = icmp eq i2 %932, 0
  br i1 %933, label %934, label %938

934:                                              ; preds = %928
  %935 = getelementptr inbounds nuw i8, ptr %687, i64 1792
  %936 = load <2 x double>, ptr %935, align 16, !tbaa !25
  %937 = select <2 x i1> %622, <2 x double> %936, <2 x double> zeroinitializer
  store <2 x double> %937, ptr %935, align 16, !tbaa !25
  br label %1057

938:                                              ; preds = %928
  %939 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %940 = fneg <2 x double> %939
  %941 = getelementptr inbounds nuw i8, ptr %687, i64 432
  %942 = load <2 x double>, ptr %941, align 16, !tbaa !25
  %943 = fdiv <2 x double> %940, %942
  %944 = fcmp ogt <2 x double> %943, splat (double -7.000000e+02)
  %945 = select <2 x i1> %944, <2 x double> %943, <2 x double> splat (double -7.000000e+02)
  %946 = fcmp olt <2 x double> %945, splat (double 7.000000e+02)
  %947 = select <2 x i1> %946, <2 x double> %945, <2 x double> splat (double 7.000000e+02)
  %948 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %947, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %949 = fadd <2 x double> %948, splat (double 0xC338000000000000)
  %950 = fneg <2 x double> %949
  %951 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %950, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %947)
  %952 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %950, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %951)
  %953 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %952, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %954 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %953, <2 x double> %952, <2 x double> splat (double 0x3E5AE64567F544E4))
  %955 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %954, <2 x double> %952, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %956 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %955, <2 x double> %952, <2 x double> splat (double 0x3EC71DE3A556C734))
  %957 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %956, <2 x double> %952, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %958 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %957, <2 x double> %952, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %959 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %958, <2 x double> %952, <2 x double> splat (double 0x3F56C16C16C16C17))
  %960 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %959, <2 x double> %952, <2 x double> splat (double 0x3F81111111111111))
  %961 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %960, <2 x double> %952, <2 x double> splat (double 0x3FA5555555555555))
  %962 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %961, <2 x double> %952, <2 x double> splat (double 0x3FC5555555555555))
  %963 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %962, <2 x double> %952, <2 x double> splat (double 5.000000e-01))
  %964 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %963, <2 x double> %952, <2 x double> splat (double 1.000000e+00))
  %965 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %964, <2 x double> %952, <2 x double> splat (double 1.000000e+00))
  %966 = bitcast <2 x double> %948 to <2 x i64>
  %967 = shl <2 x i64> %966, splat (i64 52)
  %968 = bitcast <2 x double> %965 to <2 x i64>
  %969 = add <2 x i64> %967, %968
  %970 = bitcast <2 x i64> %969 to <2 x double>
  %971 = fsub <2 x double> splat (double 1.000000e+00), %970
  %972 = getelementptr inbounds nuw i8, ptr %687, i64 1104
  %973 = load <2 x double>, ptr %972, align 16, !tbaa !25
  %974 = getelementptr inbounds nuw i8, ptr %687, i64 1888
  %975 = load i64, ptr %974, align 16, !tbaa !30
  %976 = load i64, ptr %131, align 8, !tbaa !20
  %977 = icmp slt i64 %975, %976
  br i1 %977, label %978, label %987

978:                                              ; preds = %938
  %979 = getelementptr inbounds nuw i8, ptr %687, i64 1904
  %980 = getelementptr inbounds nuw i8, ptr %687, i64 1896
  %981 = getelementptr inbounds nuw i8, ptr %687, i64 448
  %982 = getelementptr inbounds nuw i8, ptr %687, i64 464
  %983 = getelementptr inbounds nuw i8, ptr %687, i64 1936
  %984 = getelementptr inbounds nuw i8, ptr %687, i64 1928
  %985 = getelementptr inbounds nuw i8, ptr %687, i64 1992
  %986 = getelementptr inbounds nuw i8, ptr %687, i64 384
  br label %1000

987:                                              ; preds = %1000, %938
  %988 = phi <2 x double> [ zeroinitializer, %938 ], [ %1038, %1000 ]
  %989 = phi <2 x double> [ zeroinitializer, %938 ], [ %1053, %1000 ]
  %990 = getelementptr inbounds nuw i8, ptr %687, i64 944
  %991 = load <2 x double>, ptr %990, align 16, !tbaa !25
  %992 = fsub <2 x double> %991, %973
  %993 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %988, <2 x double> %992, <2 x double> %989)
  %994 = getelementptr inbounds nuw i8, ptr %687, i64 1792
  %995 = getelementptr inbounds nuw i8, ptr %687, i64 208
  %996 = load <2 x double>, ptr %995, align 16, !tbaa !25
  %997 = fmul <2 x double> %996, %993
  %998 = load <2 x double>, ptr %994, align 16, !tbaa !25
  %999 = select <2 x i1> %622, <2 x double> %998, <2 x double> %997
  store <2 x double> %999, ptr %994, align 16, !tbaa !25
  br label %1057

1000:                                             ; preds = %978, %1000
  %1001 = phi <2 x double> [ zeroinitializer, %978 ], [ %1053, %1000 ]
  %1002 = phi i64 [ %975, %978 ], [ %1054, %1000 ]
  %1003 = load ptr, ptr %979, align 16, !tbaa !45
  %1004 = getelementptr inbounds <2 x double>, ptr %1003, i64 %1002
  %1005 = load <2 x double>, ptr %1004, align 16, !tbaa !25
  %1006 = load ptr, ptr %980, align 8, !tbaa !56
  %1007 = getelementptr inbounds <2 x double>, ptr %1006, i64 %1002
  %1008 = load <2 x double>, ptr %1007, align 16, !tbaa !25
  %1009 = fadd <2 x double> %1005, %1008
  %1010 = load <2 x double>, ptr %981, align 16, !tbaa !25
  %1011 = fneg <2 x double> %1010
  %1012 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1009, <2 x double> splat (double 5.000000e-01), <2 x double> %1011)
  %1013 = load <2 x double>, ptr %982, align 16, !tbaa !25
  %1014 = fmul <2 x double> %1012, %1013
  %1015 = fcmp ogt <2 x double> %1014, splat (double -5.000000e+00)
  %1016 = select <2 x i1> %1015, <2 x double> %1014, <2 x double> splat (double -5.000000e+00)
  %1017 = fcmp olt <2 x double> %1016, splat (double 5.000000e+00)
  %1018 = select <2 x i1> %1017, <2 x double> %1016, <2 x double> splat (double 5.000000e+00)
  %1019 = fmul <2 x double> %1018, %1018
  %1020 = fadd <2 x double> %1019, splat (double 3.780000e+02)
  %1021 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1019, <2 x double> %1020, <2 x double> splat (double 1.732500e+04))
  %1022 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1019, <2 x double> %1021, <2 x double> splat (double 1.351350e+05))
  %1023 = fmul <2 x double> %1018, %1022
  %1024 = load <2 x double>, ptr %929, align 16, !tbaa !25
  %1025 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1019, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1026 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1019, <2 x double> %1025, <2 x double> splat (double 6.237000e+04))
  %1027 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1019, <2 x double> %1026, <2 x double> splat (double 1.351350e+05))
  %1028 = fdiv <2 x double> %1023, %1027
  %1029 = fadd <2 x double> %1028, splat (double 1.000000e+00)
  %1030 = fmul <2 x double> %1024, %1029
  %1031 = load ptr, ptr %983, align 16, !tbaa !46
  %1032 = getelementptr inbounds <2 x double>, ptr %1031, i64 %1002
  %1033 = load <2 x double>, ptr %1032, align 16, !tbaa !25
  %1034 = fadd <2 x double> %1033, splat (double -1.000000e+00)
  %1035 = fadd <2 x double> %1034, %1030
  %1036 = fcmp ogt <2 x double> %1035, zeroinitializer
  %1037 = select <2 x i1> %1036, <2 x double> %1035, <2 x double> zeroinitializer
  %1038 = fmul <2 x double> %971, %1037
  %1039 = load ptr, ptr %984, align 8, !tbaa !59
  %1040 = getelementptr inbounds <2 x double>, ptr %1039, i64 %1002
  %1041 = fsub <2 x double> %1033, %1038
  %1042 = load <2 x double>, ptr %1040, align 16, !tbaa !25
  %1043 = select <2 x i1> %622, <2 x double> %1042, <2 x double> %1041
  store <2 x double> %1043, ptr %1040, align 16, !tbaa !25
  %1044 = load ptr, ptr %985, align 8, !tbaa !47
  %1045 = getelementptr inbounds <2 x double>, ptr %1044, i64 %1002
  %1046 = load <2 x double>, ptr %1045, align 16, !tbaa !25
  %1047 = load i64, ptr %974, align 16, !tbaa !30
  %1048 = icmp slt i64 %1002, %1047
  %1049 = load <2 x double>, ptr %986, align 16
  %1050 = fsub <2 x double> %973, %1049
  %1051 = select i1 %1048, <2 x double> %1049, <2 x double> %1050
  %1052 = fmul <2 x double> %1046, %1051
  %1053 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1038, <2 x double> %1052, <2 x double> %1001)
  %1054 = add nsw i64 %1002, 1
  %1055 = load i64, ptr %131, align 8, !tbaa !20
  %1056 = icmp slt i64 %1054, %1055
  br i1 %1056, label %1000, label %987, !llvm.loop !60

1057:                                             ; preds = %934, %987
  %1058 = add nuw nsw i64 %685, 1
  %1059 = load i64, ptr %140, align 16, !tbaa !16
  %1060 = icmp slt i64 %1058, %1059
  br i1 %1060, label %684, label %1094, !llvm.loop !61

1061:                                             ; preds = %853, %1061
  %1062 = phi i64 [ 0, %853 ], [ %1064, %1061 ]
  %1063 = load ptr, ptr %854, align 8, !tbaa !48
  %1064 = add nuw nsw i64 %1062, 1
  %1065 = getelementptr inbounds nuw <2 x double>, ptr %1063, i64 %1064
  %1066 = load <2 x double>, ptr %1065, align 16, !tbaa !25
  %1067 = getelementptr inbounds nuw <2 x double>, ptr %1063, i64 %1062
  %1068 = load <2 x double>, ptr %1067, align 16, !tbaa !25
  %1069 = fsub <2 x double> %1066, %1068
  %1070 = load ptr, ptr %855, align 8, !tbaa !49
  %1071 = getelementptr inbounds nuw <2 x double>, ptr %1070, i64 %1062
  %1072 = load <2 x double>, ptr %1071, align 16, !tbaa !25
  %1073 = fmul <2 x double> %1069, %1072
  %1074 = load ptr, ptr %856, align 16, !tbaa !62
  %1075 = getelementptr inbounds nuw <2 x double>, ptr %1074, i64 %1064
  %1076 = load <2 x double>, ptr %1075, align 16, !tbaa !25
  %1077 = getelementptr inbounds nuw <2 x double>, ptr %1074, i64 %1062
  %1078 = load <2 x double>, ptr %1077, align 16, !tbaa !25
  %1079 = fsub <2 x double> %1076, %1078
  %1080 = load ptr, ptr %857, align 16, !tbaa !63
  %1081 = getelementptr inbounds nuw <2 x double>, ptr %1080, i64 %1062
  %1082 = load <2 x double>, ptr %1081, align 16, !tbaa !25
  %1083 = fmul <2 x double> %1079, %1082
  %1084 = load <2 x double>, ptr %858, align 16, !tbaa !25
  %1085 = load <2 x double>, ptr %711, align 16, !tbaa !25
  %1086 = load <2 x double>, ptr %714, align 16, !tbaa !25
  %1087 = fmul <2 x double> %1083, %1086
  %1088 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1085, <2 x double> %1073, <2 x double> %1087)
  %1089 = fmul <2 x double> %1084, %1088
  %1090 = load ptr, ptr %859, align 8, !tbaa !64
  %1091 = getelementptr inbounds nuw <2 x double>, ptr %1090, i64 %1062
  store <2 x double> %1089, ptr %1091, align 16, !tbaa !25
  %1092 = load i64, ptr %132, align 16, !tbaa !21
  %1093 = icmp slt i64 %1064, %1092
  br i1 %1093, label %1061, label %928, !llvm.loop !65

1094:                                             ; preds = %1057, %619
  %1095 = phi i64 [ %539, %619 ], [ %1059, %1057 ]
  %1096 = load <2 x double>, ptr %164, align 16, !tbaa !25
  %1097 = fcmp ogt <2 x double> %1096, zeroinitializer
  %1098 = select <2 x i1> %1097, <2 x i64> %536, <2 x i64> zeroinitializer
  %1099 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1098)
  %1100 = icmp eq i64 %1099, 0
  br i1 %1100, label %1107, label %1101

1101:                                             ; preds = %1094
  %1102 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, <2 x i64> noundef %1098) #7
  %1103 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %1104 = icmp eq <2 x i64> %1098, zeroinitializer
  %1105 = select <2 x i1> %1104, <2 x double> %1103, <2 x double> %1102
  store <2 x double> %1105, ptr %161, align 16, !tbaa !25
  %1106 = load i64, ptr %140, align 16, !tbaa !16
  br label %1107

1107:                                             ; preds = %1094, %1101, %534
  %1108 = phi i64 [ %1095, %1094 ], [ %1106, %1101 ], [ %539, %534 ]
  %1109 = load <2 x double>, ptr %165, align 16, !tbaa !25
  %1110 = icmp eq <2 x i64> %536, zeroinitializer
  %1111 = select <2 x i1> %1110, <2 x double> %1109, <2 x double> zeroinitializer
  store <2 x double> %1111, ptr %165, align 16, !tbaa !25
  %1112 = icmp sgt i64 %1108, 0
  br i1 %1112, label %1118, label %1113

1113:                                             ; preds = %1107
  %1114 = load <2 x double>, ptr %169, align 16, !tbaa !25
  br label %1738

1115:                                             ; preds = %1732
  %1116 = load <2 x double>, ptr %169, align 16, !tbaa !25
  %1117 = icmp sgt i64 %1736, 0
  br i1 %1117, label %1743, label %1738

1118:                                             ; preds = %1107, %1732
  %1119 = phi i64 [ %1735, %1732 ], [ 0, %1107 ]
  %1120 = load ptr, ptr %141, align 8, !tbaa !27
  %1121 = getelementptr inbounds nuw %struct.Piece, ptr %1120, i64 %1119
  %1122 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %1123 = getelementptr inbounds nuw i8, ptr %1121, i64 1600
  %1124 = load <2 x double>, ptr %1123, align 16, !tbaa !25
  %1125 = fsub <2 x double> %1122, %1124
  %1126 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1125)
  %1127 = getelementptr inbounds nuw i8, ptr %1121, i64 544
  %1128 = load <2 x double>, ptr %1127, align 16, !tbaa !25
  %1129 = fcmp ogt <2 x double> %1128, splat (double 1.000000e-09)
  %1130 = select <2 x i1> %1129, <2 x double> %1128, <2 x double> splat (double 1.000000e-09)
  %1131 = fdiv <2 x double> %1126, %1130
  %1132 = getelementptr inbounds nuw i8, ptr %1121, i64 256
  %1133 = load <2 x double>, ptr %1132, align 16, !tbaa !25
  %1134 = fcmp ule <2 x double> %1128, zeroinitializer
  %1135 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1131)
  %1136 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1135)
  %1137 = select <2 x i1> %1134, <2 x double> splat (double 1.000000e+00), <2 x double> %1136
  %1138 = fmul <2 x double> %1133, %1137
  %1139 = getelementptr inbounds nuw i8, ptr %1121, i64 272
  %1140 = load <2 x double>, ptr %1139, align 16, !tbaa !25
  %1141 = getelementptr inbounds nuw i8, ptr %1121, i64 1408
  %1142 = load <2 x double>, ptr %1141, align 16, !tbaa !25
  %1143 = getelementptr inbounds nuw i8, ptr %1121, i64 1424
  %1144 = load <2 x double>, ptr %1143, align 16, !tbaa !25
  %1145 = fadd <2 x double> %1142, %1144
  %1146 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1140, <2 x double> %1145, <2 x double> %1138)
  %1147 = getelementptr inbounds nuw i8, ptr %1121, i64 288
  %1148 = load <2 x double>, ptr %1147, align 16, !tbaa !25
  %1149 = fcmp olt <2 x double> %1146, %1148
  %1150 = select <2 x i1> %1149, <2 x double> %1146, <2 x double> %1148
  %1151 = getelementptr inbounds nuw i8, ptr %1121, i64 1328
  %1152 = load <2 x double>, ptr %1151, align 16, !tbaa !25
  %1153 = getelementptr inbounds nuw i8, ptr %1121, i64 992
  %1154 = load <2 x double>, ptr %1153, align 16, !tbaa !25
  %1155 = getelementptr inbounds nuw i8, ptr %1121, i64 1344
  %1156 = load <2 x double>, ptr %1155, align 16, !tbaa !25
  %1157 = getelementptr inbounds nuw i8, ptr %1121, i64 1184
  %1158 = load <2 x double>, ptr %1157, align 16, !tbaa !25
  %1159 = fmul <2 x double> %1156, %1158
  %1160 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1152, <2 x double> %1154, <2 x double> %1159)
  %1161 = getelementptr inbounds nuw i8, ptr %1121, i64 304
  %1162 = load <2 x double>, ptr %1161, align 16, !tbaa !25
  %1163 = fneg <2 x double> %1162
  %1164 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1163, <2 x double> %1160, <2 x double> %1150)
  %1165 = getelementptr inbounds nuw i8, ptr %1121, i64 1312
  %1166 = load <2 x double>, ptr %1165, align 16, !tbaa !25
  %1167 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1162, <2 x double> %1166, <2 x double> splat (double 1.000000e+00))
  %1168 = fdiv <2 x double> %1164, %1167
  %1169 = getelementptr inbounds nuw i8, ptr %1121, i64 1872
  %1170 = load <2 x i64>, ptr %1169, align 16, !tbaa !25
  %1171 = load <2 x double>, ptr %166, align 16, !tbaa !25
  %1172 = icmp eq <2 x i64> %1170, zeroinitializer
  %1173 = select <2 x i1> %1172, <2 x double> %1122, <2 x double> %1171
  %1174 = getelementptr inbounds nuw i8, ptr %1121, i64 1376
  store <2 x double> %1173, ptr %1174, align 16, !tbaa !25
  %1175 = load <2 x double>, ptr %167, align 16, !tbaa !25
  %1176 = select <2 x i1> %1172, <2 x double> %1168, <2 x double> %1175
  %1177 = getelementptr inbounds nuw i8, ptr %1121, i64 800
  store <2 x double> %1176, ptr %1177, align 16, !tbaa !25
  %1178 = getelementptr inbounds nuw i8, ptr %1121, i64 224
  %1179 = load <2 x double>, ptr %1178, align 16, !tbaa !25
  %1180 = fcmp ule <2 x double> %1179, zeroinitializer
  %1181 = getelementptr inbounds nuw i8, ptr %1121, i64 736
  %1182 = getelementptr inbounds nuw i8, ptr %1121, i64 768
  %1183 = load <2 x double>, ptr %1182, align 16, !tbaa !25
  %1184 = fcmp ogt <2 x double> %1179, splat (double 1.000000e-30)
  %1185 = select <2 x i1> %1184, <2 x double> %1179, <2 x double> splat (double 1.000000e-30)
  %1186 = fdiv <2 x double> %1183, %1185
  %1187 = fcmp ogt <2 x double> %1186, zeroinitializer
  %1188 = select <2 x i1> %1187, <2 x double> %1186, <2 x double> zeroinitializer
  %1189 = fcmp olt <2 x double> %1188, splat (double 1.000000e+00)
  %1190 = select <2 x i1> %1189, <2 x double> %1188, <2 x double> splat (double 1.000000e+00)
  %1191 = select <2 x i1> %1180, <2 x double> zeroinitializer, <2 x double> %1190
  %1192 = getelementptr inbounds nuw i8, ptr %1121, i64 528
  %1193 = load <2 x double>, ptr %1192, align 16, !tbaa !25
  %1194 = fmul <2 x double> %1191, splat (double 4.180000e+03)
  %1195 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1194, <2 x double> %1179, <2 x double> %1193)
  %1196 = getelementptr inbounds nuw i8, ptr %1121, i64 1072
  %1197 = load <2 x double>, ptr %1196, align 16, !tbaa !25
  %1198 = getelementptr inbounds nuw i8, ptr %1121, i64 1264
  %1199 = load <2 x double>, ptr %1198, align 16, !tbaa !25
  %1200 = fmul <2 x double> %1156, %1199
  %1201 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1152, <2 x double> %1197, <2 x double> %1200)
  %1202 = getelementptr inbounds nuw i8, ptr %1121, i64 1840
  %1203 = load <2 x i64>, ptr %1202, align 16, !tbaa !25
  %1204 = fcmp ule <2 x double> %1193, zeroinitializer
  %1205 = getelementptr inbounds nuw i8, ptr %1121, i64 1728
  store <2 x double> %1191, ptr %1205, align 16, !tbaa !25
  %1206 = fmul <2 x double> %1166, %1195
  %1207 = icmp eq <2 x i64> %1203, splat (i64 -1)
  %1208 = select <2 x i1> %1204, <2 x i1> splat (i1 true), <2 x i1> %1207
  %1209 = select <2 x i1> %1208, <2 x double> zeroinitializer, <2 x double> %1206
  %1210 = getelementptr inbounds nuw i8, ptr %1121, i64 1744
  store <2 x double> %1209, ptr %1210, align 16, !tbaa !25
  %1211 = fmul <2 x double> %1201, %1195
  %1212 = select <2 x i1> %1208, <2 x double> zeroinitializer, <2 x double> %1211
  %1213 = getelementptr inbounds nuw i8, ptr %1121, i64 1760
  store <2 x double> %1212, ptr %1213, align 16, !tbaa !25
  %1214 = load <2 x double>, ptr %1121, align 16, !tbaa !25
  %1215 = load <2 x double>, ptr %1181, align 16, !tbaa !25
  %1216 = fsub <2 x double> %1214, %1215
  %1217 = fsub <2 x double> splat (double 1.000000e+00), %1191
  %1218 = getelementptr inbounds nuw i8, ptr %1121, i64 480
  %1219 = load <2 x double>, ptr %1218, align 16, !tbaa !25
  %1220 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1217, <2 x double> %1219, <2 x double> %1216)
  %1221 = load <2 x double>, ptr %168, align 16, !tbaa !25
  %1222 = fdiv <2 x double> splat (double 1.000000e+00), %1221
  %1223 = getelementptr inbounds nuw i8, ptr %1121, i64 560
  %1224 = load <2 x double>, ptr %1223, align 16, !tbaa !25
  %1225 = fcmp ogt <2 x double> %1224, splat (double 1.000000e-30)
  %1226 = select <2 x i1> %1225, <2 x double> %1224, <2 x double> splat (double 1.000000e-30)
  %1227 = fdiv <2 x double> %1220, %1226
  %1228 = fadd <2 x double> %1222, %1227
  %1229 = getelementptr inbounds nuw i8, ptr %1121, i64 1776
  store <2 x double> %1228, ptr %1229, align 16, !tbaa !25
  %1230 = getelementptr inbounds nuw i8, ptr %1121, i64 1696
  store <2 x double> %1142, ptr %1230, align 16, !tbaa !25
  %1231 = getelementptr inbounds nuw i8, ptr %1121, i64 640
  %1232 = load <2 x double>, ptr %1231, align 16, !tbaa !25
  %1233 = getelementptr inbounds nuw i8, ptr %1121, i64 656
  %1234 = load <2 x double>, ptr %1233, align 16, !tbaa !25
  %1235 = getelementptr inbounds nuw i8, ptr %1121, i64 672
  %1236 = load <2 x double>, ptr %1235, align 16, !tbaa !25
  %1237 = getelementptr inbounds nuw i8, ptr %1121, i64 688
  %1238 = load <2 x double>, ptr %1237, align 16, !tbaa !25
  %1239 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1238, <2 x double> %1236)
  %1240 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1239, <2 x double> %1234)
  %1241 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1240, <2 x double> %1232)
  %1242 = getelementptr inbounds nuw i8, ptr %1121, i64 912
  store <2 x double> %1241, ptr %1242, align 16, !tbaa !25
  %1243 = getelementptr inbounds nuw i8, ptr %1121, i64 1104
  %1244 = load <2 x double>, ptr %1243, align 16, !tbaa !25
  %1245 = fmul <2 x double> %1152, %1244
  %1246 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1166, <2 x double> %1241, <2 x double> %1245)
  %1247 = getelementptr inbounds nuw i8, ptr %1121, i64 1296
  %1248 = load <2 x double>, ptr %1247, align 16, !tbaa !25
  %1249 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1156, <2 x double> %1248, <2 x double> %1246)
  %1250 = fmul <2 x double> %1249, splat (double 5.000000e-01)
  %1251 = getelementptr inbounds nuw i8, ptr %1121, i64 1680
  store <2 x double> %1250, ptr %1251, align 16, !tbaa !25
  %1252 = getelementptr inbounds nuw i8, ptr %1121, i64 576
  %1253 = load <2 x double>, ptr %1252, align 16, !tbaa !25
  %1254 = getelementptr inbounds nuw i8, ptr %1121, i64 592
  %1255 = load <2 x double>, ptr %1254, align 16, !tbaa !25
  %1256 = getelementptr inbounds nuw i8, ptr %1121, i64 608
  %1257 = load <2 x double>, ptr %1256, align 16, !tbaa !25
  %1258 = getelementptr inbounds nuw i8, ptr %1121, i64 624
  %1259 = load <2 x double>, ptr %1258, align 16, !tbaa !25
  %1260 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1259, <2 x double> %1257)
  %1261 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1260, <2 x double> %1255)
  %1262 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1261, <2 x double> %1253)
  %1263 = getelementptr inbounds nuw i8, ptr %1121, i64 1664
  store <2 x double> %1262, ptr %1263, align 16, !tbaa !25
  %1264 = getelementptr inbounds nuw i8, ptr %1121, i64 1888
  %1265 = load i64, ptr %1264, align 16, !tbaa !30
  %1266 = icmp eq i64 %1265, 0
  %1267 = getelementptr inbounds nuw i8, ptr %1121, i64 16
  %1268 = load <2 x double>, ptr %1267, align 16
  %1269 = fsub <2 x double> %1215, %1268
  %1270 = fdiv <2 x double> splat (double 1.000000e+00), %1269
  %1271 = fdiv <2 x double> %1262, %1215
  %1272 = select i1 %1266, <2 x double> %1271, <2 x double> %1270
  %1273 = load i64, ptr %131, align 8, !tbaa !20
  %1274 = getelementptr inbounds nuw i8, ptr %1121, i64 2008
  %1275 = load ptr, ptr %1274, align 8, !tbaa !34
  br i1 %1266, label %1276, label %1280

1276:                                             ; preds = %1118
  %1277 = getelementptr inbounds <2 x double>, ptr %1275, i64 %1273
  %1278 = load <2 x double>, ptr %1277, align 16, !tbaa !25
  %1279 = fmul <2 x double> %1272, %1278
  br label %1296

1280:                                             ; preds = %1118
  %1281 = shl nsw i64 %1273, 6
  %1282 = getelementptr inbounds i8, ptr %1275, i64 %1281
  %1283 = load <2 x double>, ptr %1282, align 16, !tbaa !25
  %1284 = getelementptr inbounds nuw i8, ptr %1282, i64 16
  %1285 = load <2 x double>, ptr %1284, align 16, !tbaa !25
  %1286 = getelementptr inbounds nuw i8, ptr %1282, i64 32
  %1287 = load <2 x double>, ptr %1286, align 16, !tbaa !25
  %1288 = getelementptr inbounds nuw i8, ptr %1282, i64 48
  %1289 = load <2 x double>, ptr %1288, align 16, !tbaa !25
  %1290 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1289, <2 x double> %1287)
  %1291 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1290, <2 x double> %1285)
  %1292 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1291, <2 x double> %1283)
  %1293 = icmp sgt i64 %1273, %1265
  %1294 = fmul <2 x double> %1272, %1292
  %1295 = select i1 %1293, <2 x double> %1294, <2 x double> %1292
  br label %1296

1296:                                             ; preds = %1276, %1280
  %1297 = phi <2 x double> [ %1279, %1276 ], [ %1295, %1280 ]
  %1298 = getelementptr inbounds nuw i8, ptr %1121, i64 1392
  %1299 = load <2 x double>, ptr %1298, align 16, !tbaa !25
  %1300 = fcmp ogt <2 x double> %1216, splat (double 0x3D719799812DEA11)
  %1301 = select <2 x i1> %1300, <2 x double> %1216, <2 x double> splat (double 0x3D719799812DEA11)
  %1302 = getelementptr inbounds nuw i8, ptr %1121, i64 1632
  store <2 x double> %1270, ptr %1302, align 16, !tbaa !25
  %1303 = getelementptr inbounds nuw i8, ptr %1121, i64 176
  %1304 = load <2 x double>, ptr %1303, align 16, !tbaa !25
  %1305 = fdiv <2 x double> %1304, %1301
  %1306 = getelementptr inbounds nuw i8, ptr %1121, i64 1648
  store <2 x double> %1305, ptr %1306, align 16, !tbaa !25
  %1307 = getelementptr inbounds nuw i8, ptr %1121, i64 1896
  %1308 = load ptr, ptr %1307, align 8, !tbaa !56
  %1309 = load i64, ptr %131, align 8, !tbaa !20
  %1310 = getelementptr <2 x double>, ptr %1308, i64 %1309
  %1311 = getelementptr i8, ptr %1310, i64 -16
  %1312 = load <2 x double>, ptr %1311, align 16, !tbaa !25
  %1313 = fadd <2 x double> %1299, %1312
  %1314 = fmul <2 x double> %1313, splat (double 5.000000e-01)
  %1315 = getelementptr inbounds nuw i8, ptr %1121, i64 48
  %1316 = load <2 x double>, ptr %1315, align 16, !tbaa !25
  %1317 = getelementptr inbounds nuw i8, ptr %1121, i64 64
  %1318 = load <2 x double>, ptr %1317, align 16, !tbaa !25
  %1319 = getelementptr inbounds nuw i8, ptr %1121, i64 80
  %1320 = load <2 x double>, ptr %1319, align 16, !tbaa !25
  %1321 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1314, <2 x double> %1320, <2 x double> %1318)
  %1322 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1314, <2 x double> %1321, <2 x double> %1316)
  %1323 = fmul <2 x double> %1297, %1322
  %1324 = fmul <2 x double> %1191, %1323
  %1325 = getelementptr inbounds nuw i8, ptr %1121, i64 512
  %1326 = load <2 x double>, ptr %1325, align 16, !tbaa !25
  %1327 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1324, <2 x double> %1326, <2 x double> splat (double 1.000000e+00))
  %1328 = fdiv <2 x double> splat (double 1.000000e+00), %1327
  %1329 = icmp eq <2 x i64> %1203, zeroinitializer
  %1330 = select <2 x i1> %1329, <2 x double> %1328, <2 x double> splat (double 1.000000e+00)
  %1331 = getelementptr inbounds nuw i8, ptr %1121, i64 1712
  store <2 x double> %1330, ptr %1331, align 16, !tbaa !25
  %1332 = fmul <2 x double> %1323, %1330
  %1333 = getelementptr inbounds nuw i8, ptr %1121, i64 1504
  store <2 x double> %1332, ptr %1333, align 16, !tbaa !25
  %1334 = fmul <2 x double> %1250, splat (double 2.000000e+00)
  %1335 = getelementptr inbounds nuw i8, ptr %1121, i64 96
  %1336 = load <2 x double>, ptr %1335, align 16, !tbaa !25
  %1337 = getelementptr inbounds nuw i8, ptr %1121, i64 112
  %1338 = load <2 x double>, ptr %1337, align 16, !tbaa !25
  %1339 = getelementptr inbounds nuw i8, ptr %1121, i64 128
  %1340 = load <2 x double>, ptr %1339, align 16, !tbaa !25
  %1341 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1299, <2 x double> %1340, <2 x double> %1338)
  %1342 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1299, <2 x double> %1341, <2 x double> %1336)
  %1343 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1334, <2 x double> %1342, <2 x double> %1332)
  %1344 = getelementptr inbounds nuw i8, ptr %1121, i64 1536
  store <2 x double> %1343, ptr %1344, align 16, !tbaa !25
  %1345 = fmul <2 x double> %1176, %1217
  %1346 = getelementptr inbounds nuw i8, ptr %1121, i64 496
  %1347 = load <2 x double>, ptr %1346, align 16, !tbaa !25
  %1348 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1345, <2 x double> %1347, <2 x double> splat (double 1.000000e+00))
  %1349 = fdiv <2 x double> %1176, %1348
  %1350 = load i64, ptr %132, align 16, !tbaa !21
  %1351 = sitofp i64 %1350 to double
  %1352 = fmul double %1351, 2.000000e+00
  %1353 = insertelement <2 x double> poison, double %1352, i64 0
  %1354 = shufflevector <2 x double> %1353, <2 x double> poison, <2 x i32> zeroinitializer
  %1355 = fmul <2 x double> %1305, %1354
  %1356 = fadd <2 x double> %1349, %1355
  %1357 = fdiv <2 x double> %1349, %1356
  %1358 = fmul <2 x double> %1262, %1355
  %1359 = select <2 x i1> %1329, <2 x double> %1349, <2 x double> %1358
  %1360 = getelementptr inbounds nuw i8, ptr %1121, i64 1520
  store <2 x double> %1359, ptr %1360, align 16, !tbaa !25
  %1361 = fmul <2 x double> %1355, %1357
  %1362 = select <2 x i1> %1329, <2 x double> %1349, <2 x double> %1361
  %1363 = getelementptr inbounds nuw i8, ptr %1121, i64 1552
  store <2 x double> %1362, ptr %1363, align 16, !tbaa !25
  %1364 = select <2 x i1> %1329, <2 x double> splat (double 1.000000e+00), <2 x double> %1357
  %1365 = getelementptr inbounds nuw i8, ptr %1121, i64 1568
  store <2 x double> %1364, ptr %1365, align 16, !tbaa !25
  %1366 = load i64, ptr %131, align 8, !tbaa !20
  %1367 = getelementptr inbounds nuw i8, ptr %1121, i64 384
  %1368 = load <2 x double>, ptr %1367, align 16, !tbaa !25
  %1369 = fsub <2 x double> %1241, %1368
  %1370 = fmul <2 x double> %1338, splat (double 5.000000e-01)
  %1371 = fmul <2 x double> %1340, splat (double 0x3FE5555555555555)
  %1372 = load <2 x double>, ptr %1308, align 16, !tbaa !25
  br i1 %1266, label %1376, label %1373

1373:                                             ; preds = %1296
  %1374 = getelementptr inbounds nuw i8, ptr %1121, i64 160
  %1375 = load <2 x double>, ptr %1374, align 16, !tbaa !25
  br label %1383

1376:                                             ; preds = %1296
  %1377 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1372, <2 x double> %1340, <2 x double> %1338)
  %1378 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1372, <2 x double> %1377, <2 x double> %1336)
  %1379 = fneg <2 x double> %1372
  %1380 = fmul <2 x double> %1372, %1379
  %1381 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1372, <2 x double> %1371, <2 x double> %1370)
  %1382 = fmul <2 x double> %1380, %1381
  br label %1383

1383:                                             ; preds = %1376, %1373
  %1384 = phi <2 x double> [ %1375, %1373 ], [ %1378, %1376 ]
  %1385 = phi <2 x double> [ zeroinitializer, %1373 ], [ %1382, %1376 ]
  %1386 = icmp sgt i64 %1366, 0
  br i1 %1386, label %1387, label %1563

1387:                                             ; preds = %1383
  %1388 = getelementptr inbounds nuw i8, ptr %1121, i64 160
  %1389 = getelementptr inbounds nuw i8, ptr %1121, i64 2008
  %1390 = getelementptr inbounds nuw i8, ptr %1121, i64 720
  %1391 = getelementptr inbounds nuw i8, ptr %1121, i64 704
  %1392 = getelementptr inbounds nuw i8, ptr %1121, i64 144
  %1393 = getelementptr inbounds nuw i8, ptr %1121, i64 1984
  %1394 = getelementptr inbounds nuw i8, ptr %1121, i64 1992
  %1395 = getelementptr inbounds nuw i8, ptr %1121, i64 1920
  %1396 = getelementptr inbounds nuw i8, ptr %1121, i64 1960
  %1397 = getelementptr inbounds nuw i8, ptr %1121, i64 1968
  %1398 = getelementptr inbounds nuw i8, ptr %1121, i64 1976
  %1399 = getelementptr inbounds nuw i8, ptr %1121, i64 1944
  %1400 = getelementptr inbounds nuw i8, ptr %1121, i64 1952
  br label %1401

1401:                                             ; preds = %1387, %1514
  %1402 = phi <2 x double> [ %1372, %1387 ], [ %1518, %1514 ]
  %1403 = phi <2 x double> [ zeroinitializer, %1387 ], [ %1515, %1514 ]
  %1404 = phi <2 x double> [ zeroinitializer, %1387 ], [ %1516, %1514 ]
  %1405 = phi <2 x double> [ zeroinitializer, %1387 ], [ %1517, %1514 ]
  %1406 = phi <2 x double> [ zeroinitializer, %1387 ], [ %1549, %1514 ]
  %1407 = phi <2 x double> [ zeroinitializer, %1387 ], [ %1552, %1514 ]
  %1408 = phi <2 x double> [ %1384, %1387 ], [ %1519, %1514 ]
  %1409 = phi <2 x double> [ %1385, %1387 ], [ %1520, %1514 ]
  %1410 = phi i64 [ 0, %1387 ], [ %1411, %1514 ]
  %1411 = add nuw nsw i64 %1410, 1
  %1412 = icmp slt i64 %1411, %1366
  br i1 %1412, label %1413, label %1504

1413:                                             ; preds = %1401
  %1414 = load ptr, ptr %1307, align 8, !tbaa !56
  %1415 = getelementptr inbounds nuw <2 x double>, ptr %1414, i64 %1411
  %1416 = load <2 x double>, ptr %1415, align 16, !tbaa !25
  %1417 = icmp slt i64 %1411, %1265
  br i1 %1417, label %1418, label %1420

1418:                                             ; preds = %1413
  %1419 = load <2 x double>, ptr %1388, align 16, !tbaa !25
  br label %1430

1420:                                             ; preds = %1413
  %1421 = load <2 x double>, ptr %1335, align 16, !tbaa !25
  %1422 = load <2 x double>, ptr %1337, align 16, !tbaa !25
  %1423 = load <2 x double>, ptr %1339, align 16, !tbaa !25
  %1424 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1416, <2 x double> %1423, <2 x double> %1422)
  %1425 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1416, <2 x double> %1424, <2 x double> %1421)
  %1426 = fneg <2 x double> %1416
  %1427 = fmul <2 x double> %1416, %1426
  %1428 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1416, <2 x double> %1371, <2 x double> %1370)
  %1429 = fmul <2 x double> %1427, %1428
  br label %1430

1430:                                             ; preds = %1420, %1418
  %1431 = phi <2 x double> [ %1419, %1418 ], [ %1425, %1420 ]
  %1432 = phi <2 x double> [ zeroinitializer, %1418 ], [ %1429, %1420 ]
  %1433 = load i64, ptr %1264, align 16, !tbaa !30
  %1434 = icmp eq i64 %1433, 0
  %1435 = load ptr, ptr %1389, align 8, !tbaa !34
  br i1 %1434, label %1436, label %1440

1436:                                             ; preds = %1430
  %1437 = getelementptr inbounds nuw <2 x double>, ptr %1435, i64 %1411
  %1438 = load <2 x double>, ptr %1437, align 16, !tbaa !25
  %1439 = fmul <2 x double> %1272, %1438
  br label %1456

1440:                                             ; preds = %1430
  %1441 = shl nsw i64 %1411, 6
  %1442 = getelementptr inbounds nuw i8, ptr %1435, i64 %1441
  %1443 = load <2 x double>, ptr %1442, align 16, !tbaa !25
  %1444 = getelementptr inbounds nuw i8, ptr %1442, i64 16
  %1445 = load <2 x double>, ptr %1444, align 16, !tbaa !25
  %1446 = getelementptr inbounds nuw i8, ptr %1442, i64 32
  %1447 = load <2 x double>, ptr %1446, align 16, !tbaa !25
  %1448 = getelementptr inbounds nuw i8, ptr %1442, i64 48
  %1449 = load <2 x double>, ptr %1448, align 16, !tbaa !25
  %1450 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1449, <2 x double> %1447)
  %1451 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1450, <2 x double> %1445)
  %1452 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1451, <2 x double> %1443)
  %1453 = icmp slt i64 %1410, %1433
  %1454 = fmul <2 x double> %1272, %1452
  %1455 = select i1 %1453, <2 x double> %1452, <2 x double> %1454
  br label %1456

1456:                                             ; preds = %1440, %1436
  %1457 = phi <2 x double> [ %1439, %1436 ], [ %1455, %1440 ]
  %1458 = icmp slt i64 %1410, %1433
  br i1 %1458, label %1468, label %1459

1459:                                             ; preds = %1456
  %1460 = fadd <2 x double> %1402, %1416
  %1461 = fmul <2 x double> %1460, splat (double 5.000000e-01)
  %1462 = load <2 x double>, ptr %1315, align 16, !tbaa !25
  %1463 = load <2 x double>, ptr %1317, align 16, !tbaa !25
  %1464 = load <2 x double>, ptr %1319, align 16, !tbaa !25
  %1465 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1461, <2 x double> %1464, <2 x double> %1463)
  %1466 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1461, <2 x double> %1465, <2 x double> %1462)
  %1467 = fmul <2 x double> %1457, %1466
  br label %1489

1468:                                             ; preds = %1456
  %1469 = icmp slt i64 %1411, %1433
  br i1 %1469, label %1470, label %1473

1470:                                             ; preds = %1468
  %1471 = load <2 x double>, ptr %1392, align 16, !tbaa !25
  %1472 = fmul <2 x double> %1457, %1471
  br label %1489

1473:                                             ; preds = %1468
  %1474 = load <2 x double>, ptr %1390, align 16, !tbaa !25
  %1475 = load <2 x double>, ptr %1267, align 16, !tbaa !25
  %1476 = fsub <2 x double> %1215, %1475
  %1477 = fmul <2 x double> %1474, %1476
  %1478 = load <2 x double>, ptr %1391, align 16, !tbaa !25
  %1479 = load <2 x double>, ptr %1392, align 16, !tbaa !25
  %1480 = fdiv <2 x double> %1478, %1479
  %1481 = load <2 x double>, ptr %1315, align 16, !tbaa !25
  %1482 = load <2 x double>, ptr %1317, align 16, !tbaa !25
  %1483 = load <2 x double>, ptr %1319, align 16, !tbaa !25
  %1484 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1416, <2 x double> %1483, <2 x double> %1482)
  %1485 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1416, <2 x double> %1484, <2 x double> %1481)
  %1486 = fdiv <2 x double> %1477, %1485
  %1487 = fadd <2 x double> %1480, %1486
  %1488 = fdiv <2 x double> %1457, %1487
  br label %1489

1489:                                             ; preds = %1459, %1470, %1473
  %1490 = phi <2 x double> [ %1467, %1459 ], [ %1472, %1470 ], [ %1488, %1473 ]
  br i1 %1417, label %1497, label %1491

1491:                                             ; preds = %1489
  %1492 = load ptr, ptr %1393, align 16, !tbaa !66
  %1493 = getelementptr inbounds nuw <2 x double>, ptr %1492, i64 %1411
  %1494 = load <2 x double>, ptr %1493, align 16, !tbaa !25
  %1495 = load <2 x double>, ptr %1251, align 16, !tbaa !25
  %1496 = fmul <2 x double> %1494, %1495
  br label %1497

1497:                                             ; preds = %1489, %1491
  %1498 = phi <2 x double> [ %1496, %1491 ], [ zeroinitializer, %1489 ]
  %1499 = fneg <2 x double> %1498
  %1500 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1499, <2 x double> %1408, <2 x double> %1490)
  %1501 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1498, <2 x double> %1431, <2 x double> %1490)
  %1502 = fadd <2 x double> %1409, %1432
  %1503 = fmul <2 x double> %1502, %1498
  br label %1514

1504:                                             ; preds = %1401
  %1505 = load <2 x double>, ptr %1298, align 16, !tbaa !25
  %1506 = load <2 x double>, ptr %1333, align 16, !tbaa !25
  %1507 = load <2 x double>, ptr %1344, align 16, !tbaa !25
  %1508 = load <2 x double>, ptr %1251, align 16, !tbaa !25
  %1509 = fmul <2 x double> %1508, splat (double -2.000000e+00)
  %1510 = fmul <2 x double> %1505, %1509
  %1511 = fmul <2 x double> %1505, %1510
  %1512 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1505, <2 x double> %1371, <2 x double> %1370)
  %1513 = fmul <2 x double> %1512, %1511
  br label %1514

1514:                                             ; preds = %1504, %1497
  %1515 = phi <2 x double> [ %1500, %1497 ], [ %1506, %1504 ]
  %1516 = phi <2 x double> [ %1501, %1497 ], [ %1507, %1504 ]
  %1517 = phi <2 x double> [ %1503, %1497 ], [ %1513, %1504 ]
  %1518 = phi <2 x double> [ %1416, %1497 ], [ %1402, %1504 ]
  %1519 = phi <2 x double> [ %1431, %1497 ], [ %1408, %1504 ]
  %1520 = phi <2 x double> [ %1432, %1497 ], [ %1409, %1504 ]
  %1521 = load ptr, ptr %1394, align 8, !tbaa !47
  %1522 = getelementptr inbounds nuw <2 x double>, ptr %1521, i64 %1410
  %1523 = load <2 x double>, ptr %1522, align 16, !tbaa !25
  %1524 = icmp slt i64 %1410, %1265
  %1525 = select i1 %1524, <2 x double> %1368, <2 x double> %1369
  %1526 = fmul <2 x double> %1166, %1525
  %1527 = fmul <2 x double> %1526, %1523
  %1528 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1527, <2 x double> %1408, <2 x double> %1515)
  %1529 = fadd <2 x double> %1404, %1528
  %1530 = fsub <2 x double> %1517, %1405
  %1531 = fneg <2 x double> %1527
  %1532 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1531, <2 x double> %1409, <2 x double> %1530)
  %1533 = load ptr, ptr %1395, align 16, !tbaa !57
  %1534 = getelementptr inbounds nuw <2 x double>, ptr %1533, i64 %1410
  %1535 = load <2 x double>, ptr %1534, align 16, !tbaa !25
  %1536 = fsub <2 x double> %1532, %1535
  %1537 = fneg <2 x double> %1403
  %1538 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1537, <2 x double> %1407, <2 x double> %1529)
  %1539 = fdiv <2 x double> splat (double 1.000000e+00), %1538
  %1540 = load ptr, ptr %1396, align 8, !tbaa !67
  %1541 = getelementptr inbounds nuw <2 x double>, ptr %1540, i64 %1410
  store <2 x double> %1536, ptr %1541, align 16, !tbaa !25
  %1542 = load ptr, ptr %1397, align 16, !tbaa !68
  %1543 = getelementptr inbounds nuw <2 x double>, ptr %1542, i64 %1410
  store <2 x double> %1403, ptr %1543, align 16, !tbaa !25
  %1544 = fadd <2 x double> %1403, %1516
  %1545 = fsub <2 x double> %1544, %1529
  %1546 = load ptr, ptr %1398, align 8, !tbaa !69
  %1547 = getelementptr inbounds nuw <2 x double>, ptr %1546, i64 %1410
  store <2 x double> %1545, ptr %1547, align 16, !tbaa !25
  %1548 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1403, <2 x double> %1406, <2 x double> %1536)
  %1549 = fmul <2 x double> %1548, %1539
  %1550 = load ptr, ptr %1399, align 8, !tbaa !70
  %1551 = getelementptr inbounds nuw <2 x double>, ptr %1550, i64 %1410
  store <2 x double> %1549, ptr %1551, align 16, !tbaa !25
  %1552 = fmul <2 x double> %1516, %1539
  %1553 = load ptr, ptr %1400, align 16, !tbaa !71
  %1554 = getelementptr inbounds nuw <2 x double>, ptr %1553, i64 %1410
  store <2 x double> %1552, ptr %1554, align 16, !tbaa !25
  %1555 = icmp eq i64 %1411, %1366
  br i1 %1555, label %1556, label %1401, !llvm.loop !72

1556:                                             ; preds = %1514
  %1557 = load i64, ptr %131, align 8, !tbaa !20
  %1558 = load <2 x double>, ptr %1333, align 16, !tbaa !25
  %1559 = load <2 x double>, ptr %1360, align 16, !tbaa !25
  %1560 = load <2 x double>, ptr %1213, align 16, !tbaa !25
  %1561 = load <2 x double>, ptr %1210, align 16, !tbaa !25
  %1562 = load <2 x i64>, ptr %1202, align 16, !tbaa !25
  br label %1563

1563:                                             ; preds = %1556, %1383
  %1564 = phi <2 x i64> [ %1562, %1556 ], [ %1203, %1383 ]
  %1565 = phi <2 x double> [ %1561, %1556 ], [ %1209, %1383 ]
  %1566 = phi <2 x double> [ %1560, %1556 ], [ %1212, %1383 ]
  %1567 = phi <2 x double> [ %1559, %1556 ], [ %1359, %1383 ]
  %1568 = phi <2 x double> [ %1558, %1556 ], [ %1332, %1383 ]
  %1569 = phi i64 [ %1557, %1556 ], [ %1366, %1383 ]
  %1570 = getelementptr inbounds nuw i8, ptr %1121, i64 1944
  %1571 = load ptr, ptr %1570, align 8, !tbaa !70
  %1572 = add nsw i64 %1569, -1
  %1573 = getelementptr inbounds <2 x double>, ptr %1571, i64 %1572
  %1574 = load <2 x double>, ptr %1573, align 16, !tbaa !25
  %1575 = getelementptr inbounds nuw i8, ptr %1121, i64 1952
  %1576 = load ptr, ptr %1575, align 16, !tbaa !71
  %1577 = getelementptr inbounds <2 x double>, ptr %1576, i64 %1572
  %1578 = load <2 x double>, ptr %1577, align 16, !tbaa !25
  %1579 = fmul <2 x double> %1574, %1568
  %1580 = fsub <2 x double> splat (double 1.000000e+00), %1578
  %1581 = fmul <2 x double> %1568, %1580
  %1582 = load <2 x double>, ptr %1174, align 16, !tbaa !25
  %1583 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1567, <2 x double> %1582, <2 x double> %1579)
  %1584 = fsub <2 x double> %1583, %1566
  %1585 = fadd <2 x double> %1581, %1567
  %1586 = fadd <2 x double> %1585, %1565
  %1587 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1564)
  %1588 = icmp eq i64 %1587, 0
  %1589 = load i64, ptr %132, align 16, !tbaa !21
  br i1 %1588, label %1590, label %1605

1590:                                             ; preds = %1563
  %1591 = icmp slt i64 %1589, 0
  br i1 %1591, label %1596, label %1592

1592:                                             ; preds = %1590
  %1593 = getelementptr inbounds nuw i8, ptr %1121, i64 352
  %1594 = getelementptr inbounds nuw i8, ptr %1121, i64 2064
  %1595 = load <2 x double>, ptr %1593, align 16, !tbaa !25
  br label %1598

1596:                                             ; preds = %1598, %1590
  %1597 = getelementptr inbounds nuw i8, ptr %1121, i64 1456
  store <2 x double> %1584, ptr %1597, align 16, !tbaa !25
  br label %1732

1598:                                             ; preds = %1592, %1598
  %1599 = phi i64 [ 0, %1592 ], [ %1602, %1598 ]
  %1600 = load ptr, ptr %1594, align 16, !tbaa !73
  %1601 = getelementptr inbounds nuw <2 x double>, ptr %1600, i64 %1599
  store <2 x double> %1595, ptr %1601, align 16, !tbaa !25
  %1602 = add nuw nsw i64 %1599, 1
  %1603 = load i64, ptr %132, align 16, !tbaa !21
  %1604 = icmp slt i64 %1599, %1603
  br i1 %1604, label %1598, label %1596, !llvm.loop !74

1605:                                             ; preds = %1563
  %1606 = load <2 x double>, ptr %1181, align 16, !tbaa !25
  %1607 = load <2 x double>, ptr %1230, align 16, !tbaa !25
  %1608 = getelementptr inbounds nuw i8, ptr %1121, i64 320
  %1609 = load <2 x double>, ptr %1608, align 16, !tbaa !25
  %1610 = fmul <2 x double> %1607, %1609
  %1611 = load <2 x double>, ptr %1121, align 16, !tbaa !25
  %1612 = fsub <2 x double> %1611, %1606
  %1613 = sitofp i64 %1589 to double
  %1614 = insertelement <2 x double> poison, double %1613, i64 0
  %1615 = shufflevector <2 x double> %1614, <2 x double> poison, <2 x i32> zeroinitializer
  %1616 = fdiv <2 x double> %1612, %1615
  %1617 = load <2 x double>, ptr %1363, align 16, !tbaa !25
  %1618 = load <2 x double>, ptr %1365, align 16, !tbaa !25
  %1619 = getelementptr inbounds nuw i8, ptr %1121, i64 352
  %1620 = load <2 x double>, ptr %1619, align 16, !tbaa !25
  %1621 = getelementptr inbounds nuw i8, ptr %1121, i64 2064
  %1622 = load ptr, ptr %1621, align 16, !tbaa !73
  %1623 = getelementptr inbounds <2 x double>, ptr %1622, i64 %1589
  store <2 x double> %1620, ptr %1623, align 16, !tbaa !25
  %1624 = icmp sgt i64 %1589, 0
  br i1 %1624, label %1625, label %1716

1625:                                             ; preds = %1605
  %1626 = fneg <2 x double> %1610
  %1627 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1626, <2 x double> %1618, <2 x double> %1617)
  %1628 = fsub <2 x double> splat (double 1.000000e+00), %1618
  %1629 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1610, <2 x double> %1628, <2 x double> %1617)
  %1630 = getelementptr inbounds nuw i8, ptr %1121, i64 2072
  %1631 = getelementptr inbounds nuw i8, ptr %1121, i64 2080
  %1632 = getelementptr inbounds nuw i8, ptr %1121, i64 192
  %1633 = fmul <2 x double> %1610, splat (double -5.000000e-01)
  %1634 = getelementptr inbounds nuw i8, ptr %1121, i64 2040
  %1635 = getelementptr inbounds nuw i8, ptr %1121, i64 2048
  %1636 = getelementptr inbounds nuw i8, ptr %1121, i64 2056
  br label %1637

1637:                                             ; preds = %1625, %1691
  %1638 = phi <2 x double> [ %1629, %1625 ], [ %1693, %1691 ]
  %1639 = phi <2 x double> [ %1627, %1625 ], [ %1694, %1691 ]
  %1640 = phi <2 x double> [ %1582, %1625 ], [ %1709, %1691 ]
  %1641 = phi <2 x double> [ zeroinitializer, %1625 ], [ %1712, %1691 ]
  %1642 = phi <2 x double> [ %1620, %1625 ], [ %1655, %1691 ]
  %1643 = phi i64 [ %1589, %1625 ], [ %1644, %1691 ]
  %1644 = add nsw i64 %1643, -1
  %1645 = uitofp nneg i64 %1644 to double
  %1646 = insertelement <2 x double> poison, double %1645, i64 0
  %1647 = shufflevector <2 x double> %1646, <2 x double> poison, <2 x i32> zeroinitializer
  %1648 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1647, <2 x double> %1616, <2 x double> %1606)
  %1649 = load <2 x double>, ptr %1231, align 16, !tbaa !25
  %1650 = load <2 x double>, ptr %1233, align 16, !tbaa !25
  %1651 = load <2 x double>, ptr %1235, align 16, !tbaa !25
  %1652 = load <2 x double>, ptr %1237, align 16, !tbaa !25
  %1653 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1648, <2 x double> %1652, <2 x double> %1651)
  %1654 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1648, <2 x double> %1653, <2 x double> %1650)
  %1655 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1648, <2 x double> %1654, <2 x double> %1649)
  %1656 = load <2 x double>, ptr %1165, align 16, !tbaa !25
  %1657 = load <2 x double>, ptr %1151, align 16, !tbaa !25
  %1658 = load ptr, ptr %1630, align 8, !tbaa !48
  %1659 = getelementptr inbounds nuw <2 x double>, ptr %1658, i64 %1644
  %1660 = load <2 x double>, ptr %1659, align 16, !tbaa !25
  %1661 = fmul <2 x double> %1657, %1660
  %1662 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1656, <2 x double> %1655, <2 x double> %1661)
  %1663 = load <2 x double>, ptr %1155, align 16, !tbaa !25
  %1664 = load ptr, ptr %1631, align 16, !tbaa !62
  %1665 = getelementptr inbounds nuw <2 x double>, ptr %1664, i64 %1644
  %1666 = load <2 x double>, ptr %1665, align 16, !tbaa !25
  %1667 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1663, <2 x double> %1666, <2 x double> %1662)
  %1668 = fmul <2 x double> %1667, splat (double 5.000000e-01)
  %1669 = icmp eq i64 %1643, 1
  br i1 %1669, label %1685, label %1670

1670:                                             ; preds = %1637
  %1671 = load <2 x double>, ptr %1632, align 16, !tbaa !25
  %1672 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1668, <2 x double> %1671, <2 x double> %1633)
  %1673 = load <2 x double>, ptr %1306, align 16, !tbaa !25
  %1674 = fmul <2 x double> %1615, %1673
  %1675 = load <2 x double>, ptr %1252, align 16, !tbaa !25
  %1676 = load <2 x double>, ptr %1254, align 16, !tbaa !25
  %1677 = load <2 x double>, ptr %1256, align 16, !tbaa !25
  %1678 = load <2 x double>, ptr %1258, align 16, !tbaa !25
  %1679 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1648, <2 x double> %1678, <2 x double> %1677)
  %1680 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1648, <2 x double> %1679, <2 x double> %1676)
  %1681 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1648, <2 x double> %1680, <2 x double> %1675)
  %1682 = fmul <2 x double> %1674, %1681
  %1683 = fsub <2 x double> %1682, %1672
  %1684 = fadd <2 x double> %1672, %1682
  br label %1691

1685:                                             ; preds = %1637
  %1686 = load <2 x double>, ptr %1360, align 16, !tbaa !25
  %1687 = load <2 x double>, ptr %1632, align 16, !tbaa !25
  %1688 = fmul <2 x double> %1668, splat (double -2.000000e+00)
  %1689 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1688, <2 x double> %1687, <2 x double> %1686)
  %1690 = fadd <2 x double> %1610, %1689
  br label %1691

1691:                                             ; preds = %1685, %1670
  %1692 = phi <2 x double> [ %1671, %1670 ], [ %1687, %1685 ]
  %1693 = phi <2 x double> [ %1683, %1670 ], [ %1690, %1685 ]
  %1694 = phi <2 x double> [ %1684, %1670 ], [ %1686, %1685 ]
  %1695 = fsub <2 x double> %1642, %1655
  %1696 = fmul <2 x double> %1656, %1695
  %1697 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1696, <2 x double> %1692, <2 x double> %1638)
  %1698 = fadd <2 x double> %1694, %1697
  %1699 = fneg <2 x double> %1639
  %1700 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1699, <2 x double> %1641, <2 x double> %1698)
  %1701 = fdiv <2 x double> splat (double 1.000000e+00), %1700
  %1702 = load ptr, ptr %1621, align 16, !tbaa !73
  %1703 = getelementptr inbounds nuw <2 x double>, ptr %1702, i64 %1644
  store <2 x double> %1655, ptr %1703, align 16, !tbaa !25
  %1704 = load ptr, ptr %1634, align 8, !tbaa !64
  %1705 = getelementptr inbounds nuw <2 x double>, ptr %1704, i64 %1644
  %1706 = load <2 x double>, ptr %1705, align 16, !tbaa !25
  %1707 = fneg <2 x double> %1706
  %1708 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1639, <2 x double> %1640, <2 x double> %1707)
  %1709 = fmul <2 x double> %1701, %1708
  %1710 = load ptr, ptr %1635, align 16, !tbaa !75
  %1711 = getelementptr inbounds nuw <2 x double>, ptr %1710, i64 %1644
  store <2 x double> %1709, ptr %1711, align 16, !tbaa !25
  %1712 = fmul <2 x double> %1693, %1701
  %1713 = load ptr, ptr %1636, align 8, !tbaa !76
  %1714 = getelementptr inbounds nuw <2 x double>, ptr %1713, i64 %1644
  store <2 x double> %1712, ptr %1714, align 16, !tbaa !25
  %1715 = icmp samesign ugt i64 %1643, 1
  br i1 %1715, label %1637, label %1716, !llvm.loop !77

1716:                                             ; preds = %1691, %1605
  %1717 = load <2 x i64>, ptr %1202, align 16, !tbaa !25
  %1718 = load <2 x double>, ptr %1360, align 16, !tbaa !25
  %1719 = getelementptr inbounds nuw i8, ptr %1121, i64 2048
  %1720 = load ptr, ptr %1719, align 16, !tbaa !75
  %1721 = load <2 x double>, ptr %1720, align 16, !tbaa !25
  %1722 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1718, <2 x double> %1721, <2 x double> %1579)
  %1723 = icmp eq <2 x i64> %1717, zeroinitializer
  %1724 = select <2 x i1> %1723, <2 x double> %1584, <2 x double> %1722
  %1725 = getelementptr inbounds nuw i8, ptr %1121, i64 1456
  store <2 x double> %1724, ptr %1725, align 16, !tbaa !25
  %1726 = getelementptr inbounds nuw i8, ptr %1121, i64 2056
  %1727 = load ptr, ptr %1726, align 8, !tbaa !76
  %1728 = load <2 x double>, ptr %1727, align 16, !tbaa !25
  %1729 = fsub <2 x double> splat (double 1.000000e+00), %1728
  %1730 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1718, <2 x double> %1729, <2 x double> %1581)
  %1731 = select <2 x i1> %1723, <2 x double> %1586, <2 x double> %1730
  br label %1732

1732:                                             ; preds = %1596, %1716
  %1733 = phi <2 x double> [ %1586, %1596 ], [ %1731, %1716 ]
  %1734 = getelementptr inbounds nuw i8, ptr %1121, i64 1472
  store <2 x double> %1733, ptr %1734, align 16, !tbaa !25
  %1735 = add nuw nsw i64 %1119, 1
  %1736 = load i64, ptr %140, align 16, !tbaa !16
  %1737 = icmp slt i64 %1735, %1736
  br i1 %1737, label %1118, label %1115, !llvm.loop !78

1738:                                             ; preds = %1838, %1113, %1115
  %1739 = phi <2 x double> [ %1114, %1113 ], [ %1116, %1115 ], [ %1116, %1838 ]
  %1740 = fcmp ogt <2 x double> %1739, zeroinitializer
  %1741 = bitcast <2 x i1> %1740 to i2
  %1742 = icmp eq i2 %1741, 0
  br i1 %1742, label %1845, label %1842

1743:                                             ; preds = %1115, %1838
  %1744 = phi i64 [ %1839, %1838 ], [ %1736, %1115 ]
  %1745 = phi i64 [ %1840, %1838 ], [ 0, %1115 ]
  %1746 = load ptr, ptr %141, align 8, !tbaa !27
  %1747 = getelementptr inbounds nuw %struct.Piece, ptr %1746, i64 %1745
  %1748 = getelementptr inbounds nuw i8, ptr %1747, i64 1872
  %1749 = load <2 x i64>, ptr %1748, align 16, !tbaa !25
  %1750 = getelementptr inbounds nuw i8, ptr %1747, i64 560
  %1751 = load <2 x double>, ptr %1750, align 16, !tbaa !25
  %1752 = fcmp ogt <2 x double> %1751, zeroinitializer
  %1753 = select <2 x i1> %1752, <2 x i64> %1749, <2 x i64> zeroinitializer
  %1754 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1753)
  %1755 = icmp eq i64 %1754, 0
  br i1 %1755, label %1838, label %1756

1756:                                             ; preds = %1743
  %1757 = load <2 x double>, ptr %170, align 16, !tbaa !25
  %1758 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1757, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1759 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1757, <2 x double> %1758, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1760 = load <2 x double>, ptr %171, align 16, !tbaa !25
  %1761 = getelementptr inbounds nuw i8, ptr %1747, i64 1456
  %1762 = load <2 x double>, ptr %1761, align 16, !tbaa !25
  %1763 = getelementptr inbounds nuw i8, ptr %1747, i64 1472
  %1764 = load <2 x double>, ptr %1763, align 16, !tbaa !25
  %1765 = fdiv <2 x double> %1762, %1764
  %1766 = fcmp olt <2 x double> %1765, %1757
  %1767 = select <2 x i1> %1766, <2 x double> %1765, <2 x double> %1757
  %1768 = getelementptr inbounds nuw i8, ptr %1747, i64 1392
  %1769 = load <2 x double>, ptr %1768, align 16, !tbaa !25
  %1770 = fcmp olt <2 x double> %1769, %1767
  %1771 = select <2 x i1> %1770, <2 x double> %1769, <2 x double> %1767
  %1772 = fneg <2 x double> %1764
  %1773 = getelementptr inbounds nuw i8, ptr %1747, i64 1776
  %1774 = load <2 x double>, ptr %1773, align 16, !tbaa !25
  br label %1778

1775:                                             ; preds = %1778
  %1776 = getelementptr inbounds nuw i8, ptr %1747, i64 1488
  store <2 x double> %1829, ptr %1776, align 16, !tbaa !25
  %1777 = load i64, ptr %140, align 16, !tbaa !16
  br label %1838

1778:                                             ; preds = %1756, %1778
  %1779 = phi <2 x i64> [ %1753, %1756 ], [ %1832, %1778 ]
  %1780 = phi i32 [ 0, %1756 ], [ %1833, %1778 ]
  %1781 = phi <2 x double> [ %1771, %1756 ], [ %1829, %1778 ]
  %1782 = fadd <2 x double> %1781, splat (double 2.731500e+02)
  %1783 = fcmp ogt <2 x double> %1781, zeroinitializer
  %1784 = select <2 x i1> %1783, <2 x double> %1781, <2 x double> zeroinitializer
  %1785 = fadd <2 x double> %1784, splat (double 2.731500e+02)
  %1786 = fadd <2 x double> %1785, splat (double 0xC08451671D164BD4)
  %1787 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %1786
  %1788 = fsub <2 x double> %1785, %1787
  %1789 = fadd <2 x double> %1788, splat (double 0x40923C3565924845)
  %1790 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1788, <2 x double> %1789, <2 x double> splat (double 0xC12619EA558539E6))
  %1791 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1788, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %1792 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1788, <2 x double> %1791, <2 x double> splat (double 0xC148A99584203885))
  %1793 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1788, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %1794 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1788, <2 x double> %1793, <2 x double> splat (double 0x4118B9E59F2691E5))
  %1795 = fmul <2 x double> %1794, splat (double 2.000000e+00)
  %1796 = fmul <2 x double> %1790, splat (double 4.000000e+00)
  %1797 = fneg <2 x double> %1794
  %1798 = fmul <2 x double> %1796, %1797
  %1799 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1792, <2 x double> %1792, <2 x double> %1798)
  %1800 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1799)
  %1801 = fsub <2 x double> %1800, %1792
  %1802 = fdiv <2 x double> %1795, %1801
  %1803 = fmul <2 x double> %1802, %1802
  %1804 = fmul <2 x double> %1803, splat (double 1.000000e+06)
  %1805 = fmul <2 x double> %1803, %1804
  %1806 = fmul <2 x double> %1782, splat (double 4.615260e+02)
  %1807 = fdiv <2 x double> %1805, %1806
  %1808 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1772, <2 x double> %1781, <2 x double> %1762)
  %1809 = fsub <2 x double> %1807, %1760
  %1810 = fcmp ogt <2 x double> %1809, zeroinitializer
  %1811 = select <2 x i1> %1810, <2 x double> %1809, <2 x double> zeroinitializer
  %1812 = fmul <2 x double> %1759, %1811
  %1813 = fdiv <2 x double> %1812, %1774
  %1814 = fsub <2 x double> %1808, %1813
  %1815 = fmul <2 x double> %1759, %1807
  %1816 = fdiv <2 x double> %1759, %1806
  %1817 = fadd <2 x double> %1816, splat (double -1.000000e+00)
  %1818 = fmul <2 x double> %1817, %1815
  %1819 = fdiv <2 x double> %1818, %1782
  %1820 = fdiv <2 x double> %1819, %1774
  %1821 = fcmp ule <2 x double> %1807, %1760
  %1822 = select <2 x i1> %1821, <2 x double> zeroinitializer, <2 x double> %1820
  %1823 = fsub <2 x double> %1772, %1822
  %1824 = fdiv <2 x double> %1814, %1823
  %1825 = fsub <2 x double> %1781, %1824
  %1826 = fcmp olt <2 x double> %1825, %1767
  %1827 = select <2 x i1> %1826, <2 x double> %1825, <2 x double> %1767
  %1828 = icmp eq <2 x i64> %1779, zeroinitializer
  %1829 = select <2 x i1> %1828, <2 x double> %1781, <2 x double> %1827
  %1830 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1824)
  %1831 = fcmp oge <2 x double> %1830, splat (double 0x3EB0C6F7A0B5ED8D)
  %1832 = select <2 x i1> %1831, <2 x i64> %1779, <2 x i64> zeroinitializer
  %1833 = add nuw nsw i32 %1780, 1
  %1834 = icmp samesign ult i32 %1780, 7
  %1835 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1832)
  %1836 = icmp ne i64 %1835, 0
  %1837 = select i1 %1834, i1 %1836, i1 false
  br i1 %1837, label %1778, label %1775, !llvm.loop !79

1838:                                             ; preds = %1743, %1775
  %1839 = phi i64 [ %1744, %1743 ], [ %1777, %1775 ]
  %1840 = add nuw nsw i64 %1745, 1
  %1841 = icmp slt i64 %1840, %1839
  br i1 %1841, label %1743, label %1738, !llvm.loop !80

1842:                                             ; preds = %1738
  %1843 = sext <2 x i1> %1740 to <2 x i64>
  %1844 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, <2 x i64> noundef %1843) #7
  br label %1845

1845:                                             ; preds = %1738, %1842
  %1846 = phi <2 x double> [ %1844, %1842 ], [ zeroinitializer, %1738 ]
  %1847 = load <2 x double>, ptr %169, align 16, !tbaa !25
  %1848 = fcmp ogt <2 x double> %1847, zeroinitializer
  %1849 = sext <2 x i1> %1848 to <2 x i64>
  %1850 = xor <2 x i64> %1849, splat (i64 -1)
  %1851 = load <2 x double>, ptr %172, align 16, !tbaa !25
  %1852 = fcmp oeq <2 x double> %1851, splat (double 1.000000e+00)
  %1853 = fcmp oeq <2 x double> %1851, splat (double 2.000000e+00)
  %1854 = or <2 x i1> %1852, %1853
  %1855 = select <2 x i1> %1854, <2 x i64> %1850, <2 x i64> zeroinitializer
  %1856 = xor <2 x i64> %1855, %1849
  %1857 = load <2 x double>, ptr %170, align 16, !tbaa !25
  %1858 = load <2 x double>, ptr %173, align 16, !tbaa !25
  %1859 = load <2 x double>, ptr %174, align 16, !tbaa !25
  %1860 = icmp eq <2 x i64> %1856, splat (i64 -1)
  %1861 = select <2 x i1> %1860, <2 x double> %1859, <2 x double> %1858
  %1862 = bitcast <2 x i1> %1848 to i2
  %1863 = icmp eq i2 %1862, 0
  br i1 %1863, label %1895, label %1864

1864:                                             ; preds = %1845
  %1865 = select <2 x i1> %1848, <2 x double> %1846, <2 x double> %1861
  %1866 = fmul <2 x double> %1865, splat (double 0x3EB0C6F7A0B5ED8D)
  %1867 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1866)
  %1868 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1867)
  %1869 = fmul <2 x double> %1868, %1868
  %1870 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1868, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %1869)
  %1871 = fadd <2 x double> %1870, splat (double 0x402DD4891DBECC6B)
  %1872 = fmul <2 x double> %1868, splat (double 0x40C77A698FD9BCCA)
  %1873 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1869, <2 x double> splat (double 0x40923C3565924845), <2 x double> %1872)
  %1874 = fadd <2 x double> %1873, splat (double 0xC0B2D7440748F0B3)
  %1875 = fmul <2 x double> %1868, splat (double 0xC148A99584203885)
  %1876 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1869, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %1875)
  %1877 = fadd <2 x double> %1876, splat (double 0x4118B9E59F2691E5)
  %1878 = fmul <2 x double> %1877, splat (double 2.000000e+00)
  %1879 = fneg <2 x double> %1874
  %1880 = fmul <2 x double> %1871, splat (double 4.000000e+00)
  %1881 = fneg <2 x double> %1877
  %1882 = fmul <2 x double> %1880, %1881
  %1883 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1874, <2 x double> %1874, <2 x double> %1882)
  %1884 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1883)
  %1885 = fsub <2 x double> %1879, %1884
  %1886 = fdiv <2 x double> %1878, %1885
  %1887 = fadd <2 x double> %1886, splat (double 0x408451671D164BD4)
  %1888 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1886, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %1889 = fmul <2 x double> %1888, splat (double -4.000000e+00)
  %1890 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1887, <2 x double> %1887, <2 x double> %1889)
  %1891 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1890)
  %1892 = fsub <2 x double> %1887, %1891
  %1893 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1892, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %1894 = select <2 x i1> %1848, <2 x double> %1893, <2 x double> %1857
  br label %1895

1895:                                             ; preds = %1864, %1845
  %1896 = phi <2 x double> [ %1865, %1864 ], [ %1861, %1845 ]
  %1897 = phi <2 x double> [ %1894, %1864 ], [ %1857, %1845 ]
  %1898 = load <2 x double>, ptr %159, align 16, !tbaa !25
  %1899 = load <2 x double>, ptr %175, align 16, !tbaa !25
  %1900 = load <2 x double>, ptr %160, align 16, !tbaa !25
  %1901 = load <2 x double>, ptr %176, align 16, !tbaa !25
  %1902 = fmul <2 x double> %1900, %1901
  %1903 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1898, <2 x double> %1899, <2 x double> %1902)
  %1904 = load <2 x double>, ptr %177, align 16, !tbaa !25
  %1905 = load <2 x double>, ptr %178, align 16, !tbaa !25
  %1906 = load <2 x double>, ptr %179, align 16, !tbaa !25
  %1907 = fneg <2 x double> %1903
  %1908 = fmul <2 x double> %1906, %1907
  %1909 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1904, <2 x double> %1905, <2 x double> %1908)
  %1910 = load <2 x double>, ptr %158, align 16, !tbaa !25
  %1911 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1906, <2 x double> %1910, <2 x double> %1904)
  %1912 = fdiv <2 x double> %1909, %1911
  %1913 = load <2 x double>, ptr %180, align 16, !tbaa !25
  %1914 = select <2 x i1> %1860, <2 x double> %1913, <2 x double> %1858
  store <2 x double> %1914, ptr %180, align 16, !tbaa !25
  %1915 = load <2 x double>, ptr %181, align 16, !tbaa !25
  %1916 = select <2 x i1> %1860, <2 x double> %1915, <2 x double> %1912
  store <2 x double> %1916, ptr %181, align 16, !tbaa !25
  store <2 x double> %1896, ptr %174, align 16, !tbaa !25
  %1917 = load <2 x i64>, ptr %122, align 16, !tbaa !25
  %1918 = and <2 x i64> %1917, %1855
  %1919 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1918)
  %1920 = icmp eq i64 %1919, 0
  br i1 %1920, label %2385, label %1921

1921:                                             ; preds = %1895
  %1922 = load <2 x double>, ptr %182, align 16, !tbaa !25
  %1923 = load <2 x double>, ptr %183, align 16, !tbaa !25
  %1924 = fmul <2 x double> %1900, %1923
  %1925 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1898, <2 x double> %1922, <2 x double> %1924)
  %1926 = load <2 x double>, ptr %184, align 16, !tbaa !25
  %1927 = load <2 x double>, ptr %185, align 16, !tbaa !25
  %1928 = fdiv <2 x double> %1926, %1927
  %1929 = fmul <2 x double> %1858, splat (double 3.000000e-01)
  %1930 = load <2 x double>, ptr %186, align 16, !tbaa !25
  %1931 = fadd <2 x double> %1858, %1930
  %1932 = fadd <2 x double> %1931, splat (double 2.000000e+05)
  %1933 = fmul <2 x double> %1927, splat (double 2.870530e+02)
  %1934 = fdiv <2 x double> %1858, %1933
  %1935 = fcmp ogt <2 x double> %1896, %1929
  %1936 = select <2 x i1> %1935, <2 x double> %1896, <2 x double> %1929
  %1937 = fcmp olt <2 x double> %1936, %1932
  %1938 = select <2 x i1> %1937, <2 x double> %1936, <2 x double> %1932
  %1939 = icmp eq <2 x i64> %1855, zeroinitializer
  %1940 = select <2 x i1> %1939, <2 x double> %1896, <2 x double> %1938
  %1941 = fdiv <2 x double> %1914, splat (double 2.870530e+02)
  %1942 = fmul <2 x double> %1934, splat (double 2.000000e+00)
  %1943 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1942)
  br label %1944

1944:                                             ; preds = %2171, %1921
  %1945 = phi <2 x double> [ %1897, %1921 ], [ %1979, %2171 ]
  %1946 = phi <2 x double> [ %1929, %1921 ], [ %2328, %2171 ]
  %1947 = phi <2 x double> [ %1932, %1921 ], [ %2325, %2171 ]
  %1948 = phi <2 x i64> [ %1918, %1921 ], [ %2340, %2171 ]
  %1949 = phi i32 [ 0, %1921 ], [ %2345, %2171 ]
  %1950 = phi <2 x double> [ %1940, %1921 ], [ %2342, %2171 ]
  %1951 = fmul <2 x double> %1950, splat (double 0x3EB0C6F7A0B5ED8D)
  %1952 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1951)
  %1953 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1952)
  %1954 = fmul <2 x double> %1953, %1953
  %1955 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1953, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %1954)
  %1956 = fadd <2 x double> %1955, splat (double 0x402DD4891DBECC6B)
  %1957 = fmul <2 x double> %1953, splat (double 0x40C77A698FD9BCCA)
  %1958 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1954, <2 x double> splat (double 0x40923C3565924845), <2 x double> %1957)
  %1959 = fadd <2 x double> %1958, splat (double 0xC0B2D7440748F0B3)
  %1960 = fmul <2 x double> %1953, splat (double 0xC148A99584203885)
  %1961 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1954, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %1960)
  %1962 = fadd <2 x double> %1961, splat (double 0x4118B9E59F2691E5)
  %1963 = fmul <2 x double> %1962, splat (double 2.000000e+00)
  %1964 = fneg <2 x double> %1959
  %1965 = fmul <2 x double> %1956, splat (double 4.000000e+00)
  %1966 = fneg <2 x double> %1962
  %1967 = fmul <2 x double> %1965, %1966
  %1968 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1959, <2 x double> %1959, <2 x double> %1967)
  %1969 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1968)
  %1970 = fsub <2 x double> %1964, %1969
  %1971 = fdiv <2 x double> %1963, %1970
  %1972 = fadd <2 x double> %1971, splat (double 0x408451671D164BD4)
  %1973 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1971, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %1974 = fmul <2 x double> %1973, splat (double -4.000000e+00)
  %1975 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1972, <2 x double> %1972, <2 x double> %1974)
  %1976 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1975)
  %1977 = fsub <2 x double> %1972, %1976
  %1978 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1977, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %1979 = select <2 x i1> %1939, <2 x double> %1945, <2 x double> %1978
  %1980 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1979, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1981 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1979, <2 x double> %1980, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1982 = load i64, ptr %140, align 16, !tbaa !16, !noalias !81
  %1983 = icmp sgt i64 %1982, 0
  br i1 %1983, label %1984, label %2171

1984:                                             ; preds = %1944
  %1985 = fdiv <2 x double> splat (double 1.000000e+00), %1981
  %1986 = fadd <2 x double> %1979, splat (double 1.000000e-09)
  br label %1987

1987:                                             ; preds = %1984, %2097
  %1988 = phi i64 [ 0, %1984 ], [ %2168, %2097 ]
  %1989 = phi <2 x double> [ zeroinitializer, %1984 ], [ %2166, %2097 ]
  %1990 = phi <2 x double> [ zeroinitializer, %1984 ], [ %2167, %2097 ]
  %1991 = load ptr, ptr %141, align 8, !tbaa !27, !noalias !81
  %1992 = getelementptr inbounds nuw %struct.Piece, ptr %1991, i64 %1988
  %1993 = getelementptr inbounds nuw i8, ptr %1992, i64 1456
  %1994 = load <2 x double>, ptr %1993, align 16, !tbaa !25, !noalias !81
  %1995 = getelementptr inbounds nuw i8, ptr %1992, i64 1472
  %1996 = load <2 x double>, ptr %1995, align 16, !tbaa !25, !noalias !81
  %1997 = getelementptr inbounds nuw i8, ptr %1992, i64 1824
  %1998 = load <2 x double>, ptr %1997, align 16, !tbaa !25, !noalias !81
  %1999 = fcmp ule <2 x double> %1998, splat (double 1.000000e+00)
  %2000 = fmul <2 x double> %1979, %1996
  %2001 = fcmp ogt <2 x double> %1994, %2000
  %2002 = and <2 x i1> %1999, %2001
  %2003 = fneg <2 x double> %1996
  %2004 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2003, <2 x double> %1979, <2 x double> %1994)
  %2005 = fmul <2 x double> %1985, %2004
  %2006 = select <2 x i1> %2002, <2 x double> %2005, <2 x double> zeroinitializer
  %2007 = fmul <2 x double> %1985, %2003
  %2008 = fdiv <2 x double> %1994, %1996
  %2009 = select <2 x i1> %2002, <2 x double> %1979, <2 x double> %2008
  %2010 = getelementptr inbounds nuw i8, ptr %1992, i64 1872
  %2011 = load <2 x i64>, ptr %2010, align 16, !tbaa !25, !noalias !81
  %2012 = getelementptr inbounds nuw i8, ptr %1992, i64 560
  %2013 = load <2 x double>, ptr %2012, align 16, !tbaa !25, !noalias !81
  %2014 = fcmp ule <2 x double> %2013, zeroinitializer
  %2015 = xor <2 x i1> %1999, splat (i1 true)
  %2016 = select <2 x i1> %2015, <2 x i1> splat (i1 true), <2 x i1> %2014
  %2017 = getelementptr inbounds nuw i8, ptr %1992, i64 1488
  %2018 = load <2 x double>, ptr %2017, align 16, !tbaa !25, !noalias !81
  %2019 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2003, <2 x double> %2018, <2 x double> %1994)
  %2020 = fcmp ogt <2 x double> %2019, zeroinitializer
  %2021 = select <2 x i1> %2020, <2 x double> %2019, <2 x double> zeroinitializer
  %2022 = fmul <2 x double> %1985, %2021
  %2023 = icmp eq <2 x i64> %2011, zeroinitializer
  %2024 = select <2 x i1> %2016, <2 x i1> splat (i1 true), <2 x i1> %2023
  %2025 = select <2 x i1> %2024, <2 x double> %2006, <2 x double> %2022
  %2026 = select <2 x i1> %2024, <2 x double> %2009, <2 x double> %2018
  %2027 = select <2 x i1> %2024, <2 x i1> %2002, <2 x i1> zeroinitializer
  %2028 = select <2 x i1> %2027, <2 x double> %2007, <2 x double> zeroinitializer
  %2029 = load i64, ptr %131, align 8, !tbaa !20, !noalias !84
  %2030 = sitofp i64 %2029 to double
  %2031 = insertelement <2 x double> poison, double %2030, i64 0
  %2032 = shufflevector <2 x double> %2031, <2 x double> poison, <2 x i32> zeroinitializer
  %2033 = icmp sgt i64 %2029, 0
  br i1 %2033, label %2034, label %2097

2034:                                             ; preds = %1987
  %2035 = getelementptr inbounds nuw i8, ptr %1992, i64 1944
  %2036 = load ptr, ptr %2035, align 8, !tbaa !70, !noalias !84
  %2037 = getelementptr inbounds nuw i8, ptr %1992, i64 1952
  %2038 = load ptr, ptr %2037, align 16, !tbaa !71, !noalias !84
  %2039 = getelementptr inbounds nuw i8, ptr %1992, i64 1888
  %2040 = load i64, ptr %2039, align 16, !tbaa !30, !noalias !84
  %2041 = getelementptr inbounds nuw i8, ptr %1992, i64 1968
  %2042 = getelementptr inbounds nuw i8, ptr %1992, i64 1960
  %2043 = getelementptr inbounds nuw i8, ptr %1992, i64 1976
  br label %2044

2044:                                             ; preds = %2034, %2079
  %2045 = phi <2 x i64> [ splat (i64 -1), %2034 ], [ %2059, %2079 ]
  %2046 = phi i64 [ %2029, %2034 ], [ %2050, %2079 ]
  %2047 = phi <2 x double> [ %2032, %2034 ], [ %2095, %2079 ]
  %2048 = phi <2 x double> [ zeroinitializer, %2034 ], [ %2091, %2079 ]
  %2049 = phi <2 x double> [ zeroinitializer, %2034 ], [ %2089, %2079 ]
  %2050 = add nsw i64 %2046, -1
  %2051 = getelementptr inbounds nuw <2 x double>, ptr %2036, i64 %2050
  %2052 = load <2 x double>, ptr %2051, align 16, !tbaa !25, !noalias !84
  %2053 = getelementptr inbounds nuw <2 x double>, ptr %2038, i64 %2050
  %2054 = load <2 x double>, ptr %2053, align 16, !tbaa !25, !noalias !84
  %2055 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2054, <2 x double> %1979, <2 x double> %2052)
  %2056 = fcmp ogt <2 x double> %2055, %1986
  %2057 = select <2 x i1> %2056, <2 x i64> %2045, <2 x i64> zeroinitializer
  %2058 = icmp sgt i64 %2046, %2040
  %2059 = select i1 %2058, <2 x i64> %2057, <2 x i64> zeroinitializer
  %2060 = icmp slt i64 %2046, %2029
  br i1 %2060, label %2061, label %2074

2061:                                             ; preds = %2044
  %2062 = load ptr, ptr %2041, align 16, !tbaa !68, !noalias !84
  %2063 = getelementptr inbounds nuw <2 x double>, ptr %2062, i64 %2046
  %2064 = load <2 x double>, ptr %2063, align 16, !tbaa !25, !noalias !84
  %2065 = fsub <2 x double> %2055, %1979
  %2066 = fmul <2 x double> %2065, %2064
  %2067 = icmp eq <2 x i64> %2059, %2045
  %2068 = select <2 x i1> %2067, <2 x double> zeroinitializer, <2 x double> %2066
  %2069 = fadd <2 x double> %2049, %2068
  %2070 = fadd <2 x double> %2054, splat (double -1.000000e+00)
  %2071 = fmul <2 x double> %2070, %2064
  %2072 = select <2 x i1> %2067, <2 x double> zeroinitializer, <2 x double> %2071
  %2073 = fadd <2 x double> %2048, %2072
  br label %2074

2074:                                             ; preds = %2061, %2044
  %2075 = phi <2 x double> [ %2069, %2061 ], [ %2049, %2044 ]
  %2076 = phi <2 x double> [ %2073, %2061 ], [ %2048, %2044 ]
  %2077 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2059)
  %2078 = icmp eq i64 %2077, 0
  br i1 %2078, label %2097, label %2079

2079:                                             ; preds = %2074
  %2080 = load ptr, ptr %2042, align 8, !tbaa !67, !noalias !84
  %2081 = getelementptr inbounds nuw <2 x double>, ptr %2080, i64 %2050
  %2082 = load <2 x double>, ptr %2081, align 16, !tbaa !25, !noalias !84
  %2083 = load ptr, ptr %2043, align 8, !tbaa !69, !noalias !84
  %2084 = getelementptr inbounds nuw <2 x double>, ptr %2083, i64 %2050
  %2085 = load <2 x double>, ptr %2084, align 16, !tbaa !25, !noalias !84
  %2086 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2085, <2 x double> %1979, <2 x double> %2082)
  %2087 = icmp eq <2 x i64> %2059, zeroinitializer
  %2088 = select <2 x i1> %2087, <2 x double> zeroinitializer, <2 x double> %2086
  %2089 = fadd <2 x double> %2075, %2088
  %2090 = select <2 x i1> %2087, <2 x double> zeroinitializer, <2 x double> %2085
  %2091 = fadd <2 x double> %2076, %2090
  %2092 = uitofp nneg i64 %2050 to double
  %2093 = insertelement <2 x double> poison, double %2092, i64 0
  %2094 = shufflevector <2 x double> %2093, <2 x double> poison, <2 x i32> zeroinitializer
  %2095 = select <2 x i1> %2087, <2 x double> %2047, <2 x double> %2094
  %2096 = icmp samesign ugt i64 %2046, 1
  br i1 %2096, label %2044, label %2097, !llvm.loop !87

2097:                                             ; preds = %2079, %2074, %1987
  %2098 = phi <2 x double> [ %2032, %1987 ], [ %2047, %2074 ], [ %2095, %2079 ]
  %2099 = phi <2 x double> [ zeroinitializer, %1987 ], [ %2075, %2074 ], [ %2089, %2079 ]
  %2100 = phi <2 x double> [ zeroinitializer, %1987 ], [ %2076, %2074 ], [ %2091, %2079 ]
  %2101 = getelementptr inbounds nuw i8, ptr %1992, i64 1520
  %2102 = load <2 x double>, ptr %2101, align 16, !tbaa !25, !noalias !81
  %2103 = getelementptr inbounds nuw i8, ptr %1992, i64 1376
  %2104 = load <2 x double>, ptr %2103, align 16, !tbaa !25, !noalias !81
  %2105 = getelementptr inbounds nuw i8, ptr %1992, i64 1760
  %2106 = load <2 x double>, ptr %2105, align 16, !tbaa !25, !noalias !81
  %2107 = fneg <2 x double> %2106
  %2108 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2102, <2 x double> %2104, <2 x double> %2107)
  %2109 = getelementptr inbounds nuw i8, ptr %1992, i64 1744
  %2110 = load <2 x double>, ptr %2109, align 16, !tbaa !25, !noalias !81
  %2111 = fadd <2 x double> %2102, %2110
  %2112 = getelementptr inbounds nuw i8, ptr %1992, i64 1840
  %2113 = load <2 x i64>, ptr %2112, align 16, !tbaa !25, !noalias !81
  %2114 = getelementptr inbounds nuw i8, ptr %1992, i64 2048
  %2115 = load ptr, ptr %2114, align 16, !tbaa !75, !noalias !81
  %2116 = load <2 x double>, ptr %2115, align 16, !tbaa !25, !noalias !81
  %2117 = fmul <2 x double> %2102, %2116
  %2118 = icmp eq <2 x i64> %2113, zeroinitializer
  %2119 = select <2 x i1> %2118, <2 x double> %2108, <2 x double> %2117
  %2120 = getelementptr inbounds nuw i8, ptr %1992, i64 2056
  %2121 = load ptr, ptr %2120, align 8, !tbaa !76, !noalias !81
  %2122 = load <2 x double>, ptr %2121, align 16, !tbaa !25, !noalias !81
  %2123 = fsub <2 x double> splat (double 1.000000e+00), %2122
  %2124 = fmul <2 x double> %2102, %2123
  %2125 = select <2 x i1> %2118, <2 x double> %2111, <2 x double> %2124
  %2126 = fneg <2 x double> %2125
  %2127 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2126, <2 x double> %1979, <2 x double> %2119)
  %2128 = fcmp olt <2 x double> %2098, %2032
  %2129 = and <2 x i1> %1999, %2128
  %2130 = fcmp ogt <2 x double> %2099, zeroinitializer
  %2131 = fcmp oge <2 x double> %2127, zeroinitializer
  %2132 = and <2 x i1> %2130, %2131
  %2133 = and <2 x i1> %2129, %2132
  %2134 = sext <2 x i1> %2133 to <2 x i64>
  %2135 = xor <2 x i64> %2134, splat (i64 -1)
  %2136 = fadd <2 x double> %2099, %2127
  %2137 = fcmp ogt <2 x double> %2136, zeroinitializer
  %2138 = and <2 x i1> %2129, %2137
  %2139 = select <2 x i1> %2138, <2 x i64> %2135, <2 x i64> zeroinitializer
  %2140 = or <2 x i64> %2139, %2134
  %2141 = fmul <2 x double> %1985, %2127
  %2142 = select <2 x i1> %2133, <2 x double> %2141, <2 x double> zeroinitializer
  %2143 = icmp eq <2 x i64> %2140, zeroinitializer
  %2144 = select <2 x i1> %2143, <2 x double> %2025, <2 x double> %2142
  %2145 = select <2 x i1> %2143, <2 x double> %2026, <2 x double> %1979
  %2146 = fsub <2 x double> %2100, %2125
  %2147 = fmul <2 x double> %1985, %2146
  %2148 = select <2 x i1> %2143, <2 x double> %2028, <2 x double> %2147
  %2149 = getelementptr inbounds nuw i8, ptr %1992, i64 1408
  store <2 x double> %2144, ptr %2149, align 16, !tbaa !25, !noalias !81
  %2150 = getelementptr inbounds nuw i8, ptr %1992, i64 1392
  store <2 x double> %2145, ptr %2150, align 16, !tbaa !25, !noalias !81
  %2151 = fmul <2 x double> %1985, %2099
  %2152 = fmul <2 x double> %1985, %2136
  %2153 = icmp eq <2 x i64> %2139, zeroinitializer
  %2154 = select <2 x i1> %2153, <2 x double> zeroinitializer, <2 x double> %2152
  %2155 = select <2 x i1> %2133, <2 x double> %2151, <2 x double> %2154
  %2156 = getelementptr inbounds nuw i8, ptr %1992, i64 1424
  store <2 x double> %2155, ptr %2156, align 16, !tbaa !25, !noalias !81
  %2157 = load i64, ptr %131, align 8, !tbaa !20, !noalias !81
  %2158 = sitofp i64 %2157 to double
  %2159 = insertelement <2 x double> poison, double %2158, i64 0
  %2160 = shufflevector <2 x double> %2159, <2 x double> poison, <2 x i32> zeroinitializer
  %2161 = select <2 x i1> %2143, <2 x double> %2160, <2 x double> %2098
  %2162 = getelementptr inbounds nuw i8, ptr %1992, i64 1440
  store <2 x double> %2161, ptr %2162, align 16, !tbaa !25, !noalias !81
  %2163 = getelementptr inbounds nuw i8, ptr %1992, i64 32
  %2164 = load <2 x double>, ptr %2163, align 16, !tbaa !25, !noalias !81
  %2165 = fadd <2 x double> %2144, %2155
  %2166 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2164, <2 x double> %2165, <2 x double> %1989)
  %2167 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2164, <2 x double> %2148, <2 x double> %1990)
  %2168 = add nuw nsw i64 %1988, 1
  %2169 = load i64, ptr %140, align 16, !tbaa !16, !noalias !81
  %2170 = icmp slt i64 %2168, %2169
  br i1 %2170, label %1987, label %2171, !llvm.loop !88

2171:                                             ; preds = %2097, %1944
  %2172 = phi <2 x double> [ zeroinitializer, %1944 ], [ %2167, %2097 ]
  %2173 = phi <2 x double> [ zeroinitializer, %1944 ], [ %2166, %2097 ]
  %2174 = fsub <2 x double> %1950, %1914
  %2175 = fcmp ogt <2 x double> %2174, zeroinitializer
  %2176 = select <2 x i1> %2175, <2 x double> %2174, <2 x double> zeroinitializer
  %2177 = fadd <2 x double> %1979, splat (double 2.731500e+02)
  %2178 = fdiv <2 x double> %2176, splat (double 4.615260e+02)
  %2179 = fadd <2 x double> %1941, %2178
  %2180 = load <2 x double>, ptr %185, align 16, !tbaa !25
  %2181 = fdiv <2 x double> %2179, %2180
  %2182 = fmul <2 x double> %2180, %2181
  %2183 = fdiv <2 x double> %1950, %2182
  %2184 = load <2 x double>, ptr %173, align 16, !tbaa !25, !noalias !89
  %2185 = fsub <2 x double> %1950, %2184
  %2186 = load <2 x double>, ptr %186, align 16, !tbaa !25, !noalias !89
  %2187 = fsub <2 x double> %2185, %2186
  %2188 = load <2 x double>, ptr %187, align 16, !tbaa !25, !noalias !89
  %2189 = load <2 x double>, ptr %172, align 16, !tbaa !25, !noalias !89
  %2190 = fcmp une <2 x double> %2189, splat (double 2.000000e+00)
  %2191 = load <2 x double>, ptr %188, align 16, !tbaa !25, !noalias !89
  %2192 = select <2 x i1> %2190, <2 x double> zeroinitializer, <2 x double> %2191
  %2193 = fadd <2 x double> %2188, %2192
  %2194 = fcmp ule <2 x double> %2185, zeroinitializer
  %2195 = fcmp ule <2 x double> %2193, zeroinitializer
  %2196 = or <2 x i1> %2194, %2195
  %2197 = fmul <2 x double> %2181, splat (double 2.000000e+00)
  %2198 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2197)
  %2199 = fmul <2 x double> %2198, %2193
  %2200 = fadd <2 x double> %2185, splat (double 2.000000e+02)
  %2201 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2200)
  %2202 = select <2 x i1> %2194, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2201
  %2203 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2185, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2204 = fmul <2 x double> %2203, %2199
  %2205 = fmul <2 x double> %2202, %2202
  %2206 = fmul <2 x double> %2202, %2205
  %2207 = fdiv <2 x double> %2204, %2206
  %2208 = fmul <2 x double> %2185, %2199
  %2209 = fdiv <2 x double> %2208, %2202
  %2210 = select <2 x i1> %2196, <2 x double> zeroinitializer, <2 x double> %2209
  %2211 = select <2 x i1> %2196, <2 x double> zeroinitializer, <2 x double> %2207
  %2212 = fcmp ule <2 x double> %2187, zeroinitializer
  %2213 = load <2 x double>, ptr %189, align 16, !tbaa !25, !noalias !89
  %2214 = fmul <2 x double> %2187, %2213
  %2215 = select <2 x i1> %2212, <2 x double> zeroinitializer, <2 x double> %2214
  %2216 = fadd <2 x double> %2215, %2210
  %2217 = select <2 x i1> %2212, <2 x double> zeroinitializer, <2 x double> %2213
  %2218 = fadd <2 x double> %2217, %2211
  %2219 = load <2 x double>, ptr %190, align 16, !tbaa !25
  %2220 = fsub <2 x double> %2184, %1950
  %2221 = fcmp ule <2 x double> %2220, zeroinitializer
  %2222 = fcmp ule <2 x double> %2219, zeroinitializer
  %2223 = or <2 x i1> %2221, %2222
  %2224 = fmul <2 x double> %1943, %2219
  %2225 = fadd <2 x double> %2220, splat (double 2.000000e+02)
  %2226 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2225)
  %2227 = select <2 x i1> %2221, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2226
  %2228 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2220, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2229 = fmul <2 x double> %2228, %2224
  %2230 = fmul <2 x double> %2227, %2227
  %2231 = fmul <2 x double> %2227, %2230
  %2232 = fdiv <2 x double> %2229, %2231
  %2233 = fmul <2 x double> %2220, %2224
  %2234 = fdiv <2 x double> %2233, %2227
  %2235 = load <2 x double>, ptr %159, align 16, !tbaa !25, !noalias !92
  %2236 = load <2 x double>, ptr %175, align 16, !tbaa !25, !noalias !92
  %2237 = load <2 x double>, ptr %160, align 16, !tbaa !25, !noalias !92
  %2238 = load <2 x double>, ptr %176, align 16, !tbaa !25, !noalias !92
  %2239 = fmul <2 x double> %2237, %2238
  %2240 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2235, <2 x double> %2236, <2 x double> %2239)
  %2241 = load <2 x double>, ptr %179, align 16, !tbaa !25, !noalias !92
  %2242 = load <2 x double>, ptr %158, align 16, !tbaa !25, !noalias !92
  %2243 = load <2 x double>, ptr %177, align 16, !tbaa !25, !noalias !92
  %2244 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2241, <2 x double> %2242, <2 x double> %2243)
  %2245 = load <2 x double>, ptr %178, align 16, !tbaa !25, !noalias !92
  %2246 = fneg <2 x double> %2240
  %2247 = fmul <2 x double> %2241, %2246
  %2248 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2243, <2 x double> %2245, <2 x double> %2247)
  %2249 = fdiv <2 x double> %2248, %2244
  %2250 = fcmp ogt <2 x double> %2176, splat (double 2.000000e+03)
  %2251 = select <2 x i1> %2250, <2 x double> %2176, <2 x double> splat (double 2.000000e+03)
  %2252 = fmul <2 x double> %2251, splat (double 0x3EB0C6F7A0B5ED8D)
  %2253 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2252)
  %2254 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2253)
  %2255 = fmul <2 x double> %2254, %2254
  %2256 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2254, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2255)
  %2257 = fadd <2 x double> %2256, splat (double 0x402DD4891DBECC6B)
  %2258 = fmul <2 x double> %2254, splat (double 0x40C77A698FD9BCCA)
  %2259 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2255, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2258)
  %2260 = fadd <2 x double> %2259, splat (double 0xC0B2D7440748F0B3)
  %2261 = fmul <2 x double> %2254, splat (double 0xC148A99584203885)
  %2262 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2255, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2261)
  %2263 = fadd <2 x double> %2262, splat (double 0x4118B9E59F2691E5)
  %2264 = fmul <2 x double> %2263, splat (double 2.000000e+00)
  %2265 = fneg <2 x double> %2260
  %2266 = fmul <2 x double> %2257, splat (double 4.000000e+00)
  %2267 = fneg <2 x double> %2263
  %2268 = fmul <2 x double> %2266, %2267
  %2269 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2260, <2 x double> %2260, <2 x double> %2268)
  %2270 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2269)
  %2271 = fsub <2 x double> %2265, %2270
  %2272 = fdiv <2 x double> %2264, %2271
  %2273 = fadd <2 x double> %2272, splat (double 0x408451671D164BD4)
  %2274 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2272, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2275 = fmul <2 x double> %2274, splat (double -4.000000e+00)
  %2276 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2273, <2 x double> %2273, <2 x double> %2275)
  %2277 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2276)
  %2278 = fsub <2 x double> %2273, %2277
  %2279 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2278, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2280 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2279, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2281 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2279, <2 x double> %2280, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2282 = fadd <2 x double> %2279, splat (double 2.731500e+02)
  %2283 = fcmp ule <2 x double> %2279, %2249
  %2284 = load <2 x double>, ptr %191, align 16, !tbaa !25, !noalias !92
  %2285 = fmul <2 x double> %2244, %2284
  %2286 = fadd <2 x double> %2244, %2284
  %2287 = fdiv <2 x double> %2285, %2286
  %2288 = fdiv <2 x double> %2287, %2281
  %2289 = fmul <2 x double> %2282, splat (double 4.615260e+02)
  %2290 = fmul <2 x double> %2251, %2281
  %2291 = fmul <2 x double> %2279, %2284
  %2292 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2249, <2 x double> %2244, <2 x double> %2291)
  %2293 = fdiv <2 x double> %2292, %2286
  %2294 = select <2 x i1> %2283, <2 x double> %2249, <2 x double> %2293
  store <2 x double> %2294, ptr %181, align 16, !tbaa !25, !noalias !92
  %2295 = fsub <2 x double> %2279, %2249
  %2296 = fmul <2 x double> %2295, %2288
  %2297 = select <2 x i1> %2283, <2 x double> zeroinitializer, <2 x double> %2296
  %2298 = fmul <2 x double> %2177, splat (double 4.615260e+02)
  %2299 = fmul <2 x double> %2177, %2298
  %2300 = fmul <2 x double> %1950, %1981
  %2301 = fdiv <2 x double> %2299, %2300
  %2302 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2242, <2 x double> %1950, <2 x double> %1925)
  %2303 = fsub <2 x double> %2173, %2297
  %2304 = fmul <2 x double> %2303, splat (double -4.615260e+02)
  %2305 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1928, <2 x double> %2302, <2 x double> %2304)
  %2306 = fmul <2 x double> %2234, splat (double -2.870530e+02)
  %2307 = select <2 x i1> %2223, <2 x double> splat (double -0.000000e+00), <2 x double> %2306
  %2308 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2183, <2 x double> %2216, <2 x double> %2307)
  %2309 = fadd <2 x double> %2308, %2305
  %2310 = fneg <2 x double> %2282
  %2311 = fmul <2 x double> %2289, %2310
  %2312 = fdiv <2 x double> %2311, %2290
  %2313 = fmul <2 x double> %2312, %2288
  %2314 = select <2 x i1> %2283, <2 x double> splat (double -0.000000e+00), <2 x double> %2313
  %2315 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2172, <2 x double> %2301, <2 x double> %2314)
  %2316 = fmul <2 x double> %2315, splat (double -4.615260e+02)
  %2317 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1928, <2 x double> %2242, <2 x double> %2316)
  %2318 = fmul <2 x double> %2232, splat (double 2.870530e+02)
  %2319 = select <2 x i1> %2223, <2 x double> zeroinitializer, <2 x double> %2318
  %2320 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2183, <2 x double> %2218, <2 x double> %2319)
  %2321 = fadd <2 x double> %2320, %2317
  %2322 = fcmp ule <2 x double> %2309, zeroinitializer
  %2323 = fcmp olt <2 x double> %1947, %1950
  %2324 = select <2 x i1> %2322, <2 x i1> splat (i1 true), <2 x i1> %2323
  %2325 = select <2 x i1> %2324, <2 x double> %1947, <2 x double> %1950
  %2326 = fcmp ogt <2 x double> %1946, %1950
  %2327 = select <2 x i1> %2326, <2 x double> %1946, <2 x double> %1950
  %2328 = select <2 x i1> %2322, <2 x double> %2327, <2 x double> %1946
  %2329 = fdiv <2 x double> %2309, %2321
  %2330 = fsub <2 x double> %1950, %2329
  %2331 = fcmp uge <2 x double> %2328, %2330
  %2332 = fcmp uge <2 x double> %2330, %2325
  %2333 = or <2 x i1> %2331, %2332
  %2334 = fadd <2 x double> %2328, %2325
  %2335 = fmul <2 x double> %2334, splat (double 5.000000e-01)
  %2336 = select <2 x i1> %2333, <2 x double> %2335, <2 x double> %2330
  %2337 = fsub <2 x double> %2336, %1950
  %2338 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2337)
  %2339 = fcmp oge <2 x double> %2338, splat (double 2.000000e-01)
  %2340 = select <2 x i1> %2339, <2 x i64> %1948, <2 x i64> zeroinitializer
  %2341 = icmp eq <2 x i64> %2340, zeroinitializer
  %2342 = select <2 x i1> %2341, <2 x double> %1950, <2 x double> %2336
  %2343 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2340)
  %2344 = icmp ne i64 %2343, 0
  %2345 = add nuw nsw i32 %1949, 1
  %2346 = icmp samesign ult i32 %1949, 59
  %2347 = select i1 %2344, i1 %2346, i1 false
  br i1 %2347, label %1944, label %2348, !llvm.loop !95

2348:                                             ; preds = %2171
  %2349 = load <2 x double>, ptr %159, align 16, !tbaa !25
  %2350 = load <2 x double>, ptr %192, align 16, !tbaa !25
  %2351 = load <2 x double>, ptr %160, align 16, !tbaa !25
  %2352 = load <2 x double>, ptr %193, align 16, !tbaa !25
  %2353 = fmul <2 x double> %2351, %2352
  %2354 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2349, <2 x double> %2350, <2 x double> %2353)
  %2355 = load <2 x double>, ptr %190, align 16, !tbaa !25
  %2356 = load <2 x double>, ptr %173, align 16, !tbaa !25
  %2357 = fsub <2 x double> %2356, %2342
  %2358 = fcmp ule <2 x double> %2357, zeroinitializer
  %2359 = fcmp ule <2 x double> %2355, zeroinitializer
  %2360 = or <2 x i1> %2359, %2358
  %2361 = fmul <2 x double> %1943, %2355
  %2362 = fadd <2 x double> %2357, splat (double 2.000000e+02)
  %2363 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2362)
  %2364 = select <2 x i1> %2358, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2363
  %2365 = fmul <2 x double> %2361, %2357
  %2366 = fdiv <2 x double> %2365, %2364
  %2367 = fmul <2 x double> %2366, splat (double 2.870530e+02)
  %2368 = select <2 x i1> %2360, <2 x double> zeroinitializer, <2 x double> %2367
  %2369 = fdiv <2 x double> %2368, %1928
  %2370 = fsub <2 x double> %2369, %2354
  %2371 = load <2 x double>, ptr %158, align 16, !tbaa !25
  %2372 = load <2 x double>, ptr %184, align 16, !tbaa !25
  %2373 = fmul <2 x double> %2181, %2372
  %2374 = fdiv <2 x double> %2216, %2373
  %2375 = fadd <2 x double> %2371, %2374
  %2376 = fdiv <2 x double> %2370, %2375
  %2377 = fcmp ogt <2 x double> %2376, zeroinitializer
  %2378 = select <2 x i1> %2377, <2 x double> %2376, <2 x double> zeroinitializer
  %2379 = fcmp olt <2 x double> %2378, %2342
  %2380 = select <2 x i1> %2379, <2 x double> %2378, <2 x double> %2342
  %2381 = load <2 x double>, ptr %180, align 16, !tbaa !25
  %2382 = select <2 x i1> %1939, <2 x double> %2381, <2 x double> %2380
  store <2 x double> %2382, ptr %180, align 16, !tbaa !25
  %2383 = select <2 x i1> %1939, <2 x double> %1916, <2 x double> %2294
  store <2 x double> %2383, ptr %181, align 16, !tbaa !25
  store <2 x double> %2342, ptr %174, align 16, !tbaa !25
  store <2 x double> %1979, ptr %194, align 16, !tbaa !25
  %2384 = load i64, ptr %140, align 16, !tbaa !16
  br label %2555

2385:                                             ; preds = %1895
  store <2 x double> %1897, ptr %194, align 16, !tbaa !25
  %2386 = load i64, ptr %140, align 16, !tbaa !16, !noalias !96
  %2387 = icmp sgt i64 %2386, 0
  br i1 %2387, label %2388, label %2558

2388:                                             ; preds = %2385
  %2389 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1897, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2390 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1897, <2 x double> %2389, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2391 = fdiv <2 x double> splat (double 1.000000e+00), %2390
  %2392 = fadd <2 x double> %1897, splat (double 1.000000e-09)
  br label %2393

2393:                                             ; preds = %2388, %2490
  %2394 = phi i64 [ 0, %2388 ], [ %2552, %2490 ]
  %2395 = load ptr, ptr %141, align 8, !tbaa !27, !noalias !96
  %2396 = getelementptr inbounds nuw %struct.Piece, ptr %2395, i64 %2394
  %2397 = getelementptr inbounds nuw i8, ptr %2396, i64 1456
  %2398 = load <2 x double>, ptr %2397, align 16, !tbaa !25, !noalias !96
  %2399 = getelementptr inbounds nuw i8, ptr %2396, i64 1472
  %2400 = load <2 x double>, ptr %2399, align 16, !tbaa !25, !noalias !96
  %2401 = getelementptr inbounds nuw i8, ptr %2396, i64 1824
  %2402 = load <2 x double>, ptr %2401, align 16, !tbaa !25, !noalias !96
  %2403 = fcmp ule <2 x double> %2402, splat (double 1.000000e+00)
  %2404 = fmul <2 x double> %1897, %2400
  %2405 = fcmp ogt <2 x double> %2398, %2404
  %2406 = and <2 x i1> %2403, %2405
  %2407 = fneg <2 x double> %2400
  %2408 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2407, <2 x double> %1897, <2 x double> %2398)
  %2409 = fmul <2 x double> %2391, %2408
  %2410 = select <2 x i1> %2406, <2 x double> %2409, <2 x double> zeroinitializer
  %2411 = fdiv <2 x double> %2398, %2400
  %2412 = select <2 x i1> %2406, <2 x double> %1897, <2 x double> %2411
  %2413 = getelementptr inbounds nuw i8, ptr %2396, i64 1872
  %2414 = load <2 x i64>, ptr %2413, align 16, !tbaa !25, !noalias !96
  %2415 = getelementptr inbounds nuw i8, ptr %2396, i64 560
  %2416 = load <2 x double>, ptr %2415, align 16, !tbaa !25, !noalias !96
  %2417 = fcmp ule <2 x double> %2416, zeroinitializer
  %2418 = xor <2 x i1> %2403, splat (i1 true)
  %2419 = select <2 x i1> %2418, <2 x i1> splat (i1 true), <2 x i1> %2417
  %2420 = getelementptr inbounds nuw i8, ptr %2396, i64 1488
  %2421 = load <2 x double>, ptr %2420, align 16, !tbaa !25, !noalias !96
  %2422 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2407, <2 x double> %2421, <2 x double> %2398)
  %2423 = fcmp ogt <2 x double> %2422, zeroinitializer
  %2424 = select <2 x i1> %2423, <2 x double> %2422, <2 x double> zeroinitializer
  %2425 = fmul <2 x double> %2391, %2424
  %2426 = icmp eq <2 x i64> %2414, zeroinitializer
  %2427 = select <2 x i1> %2419, <2 x i1> splat (i1 true), <2 x i1> %2426
  %2428 = select <2 x i1> %2427, <2 x double> %2410, <2 x double> %2425
  %2429 = select <2 x i1> %2427, <2 x double> %2412, <2 x double> %2421
  %2430 = load i64, ptr %131, align 8, !tbaa !20, !noalias !99
  %2431 = sitofp i64 %2430 to double
  %2432 = insertelement <2 x double> poison, double %2431, i64 0
  %2433 = shufflevector <2 x double> %2432, <2 x double> poison, <2 x i32> zeroinitializer
  %2434 = icmp sgt i64 %2430, 0
  br i1 %2434, label %2435, label %2490

2435:                                             ; preds = %2393
  %2436 = getelementptr inbounds nuw i8, ptr %2396, i64 1944
  %2437 = load ptr, ptr %2436, align 8, !tbaa !70, !noalias !99
  %2438 = getelementptr inbounds nuw i8, ptr %2396, i64 1952
  %2439 = load ptr, ptr %2438, align 16, !tbaa !71, !noalias !99
  %2440 = getelementptr inbounds nuw i8, ptr %2396, i64 1888
  %2441 = load i64, ptr %2440, align 16, !tbaa !30, !noalias !99
  %2442 = getelementptr inbounds nuw i8, ptr %2396, i64 1968
  %2443 = getelementptr inbounds nuw i8, ptr %2396, i64 1960
  %2444 = getelementptr inbounds nuw i8, ptr %2396, i64 1976
  br label %2445

2445:                                             ; preds = %2435, %2474
  %2446 = phi <2 x i64> [ splat (i64 -1), %2435 ], [ %2459, %2474 ]
  %2447 = phi i64 [ %2430, %2435 ], [ %2450, %2474 ]
  %2448 = phi <2 x double> [ zeroinitializer, %2435 ], [ %2484, %2474 ]
  %2449 = phi <2 x double> [ %2433, %2435 ], [ %2488, %2474 ]
  %2450 = add nsw i64 %2447, -1
  %2451 = getelementptr inbounds nuw <2 x double>, ptr %2437, i64 %2450
  %2452 = load <2 x double>, ptr %2451, align 16, !tbaa !25, !noalias !99
  %2453 = getelementptr inbounds nuw <2 x double>, ptr %2439, i64 %2450
  %2454 = load <2 x double>, ptr %2453, align 16, !tbaa !25, !noalias !99
  %2455 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2454, <2 x double> %1897, <2 x double> %2452)
  %2456 = fcmp ogt <2 x double> %2455, %2392
  %2457 = select <2 x i1> %2456, <2 x i64> %2446, <2 x i64> zeroinitializer
  %2458 = icmp sgt i64 %2447, %2441
  %2459 = select i1 %2458, <2 x i64> %2457, <2 x i64> zeroinitializer
  %2460 = icmp slt i64 %2447, %2430
  br i1 %2460, label %2461, label %2470

2461:                                             ; preds = %2445
  %2462 = load ptr, ptr %2442, align 16, !tbaa !68, !noalias !99
  %2463 = getelementptr inbounds nuw <2 x double>, ptr %2462, i64 %2447
  %2464 = load <2 x double>, ptr %2463, align 16, !tbaa !25, !noalias !99
  %2465 = fsub <2 x double> %2455, %1897
  %2466 = fmul <2 x double> %2465, %2464
  %2467 = icmp eq <2 x i64> %2459, %2446
  %2468 = select <2 x i1> %2467, <2 x double> zeroinitializer, <2 x double> %2466
  %2469 = fadd <2 x double> %2448, %2468
  br label %2470

2470:                                             ; preds = %2461, %2445
  %2471 = phi <2 x double> [ %2469, %2461 ], [ %2448, %2445 ]
  %2472 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2459)
  %2473 = icmp eq i64 %2472, 0
  br i1 %2473, label %2490, label %2474

2474:                                             ; preds = %2470
  %2475 = load ptr, ptr %2443, align 8, !tbaa !67, !noalias !99
  %2476 = getelementptr inbounds nuw <2 x double>, ptr %2475, i64 %2450
  %2477 = load <2 x double>, ptr %2476, align 16, !tbaa !25, !noalias !99
  %2478 = load ptr, ptr %2444, align 8, !tbaa !69, !noalias !99
  %2479 = getelementptr inbounds nuw <2 x double>, ptr %2478, i64 %2450
  %2480 = load <2 x double>, ptr %2479, align 16, !tbaa !25, !noalias !99
  %2481 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2480, <2 x double> %1897, <2 x double> %2477)
  %2482 = icmp eq <2 x i64> %2459, zeroinitializer
  %2483 = select <2 x i1> %2482, <2 x double> zeroinitializer, <2 x double> %2481
  %2484 = fadd <2 x double> %2471, %2483
  %2485 = uitofp nneg i64 %2450 to double
  %2486 = insertelement <2 x double> poison, double %2485, i64 0
  %2487 = shufflevector <2 x double> %2486, <2 x double> poison, <2 x i32> zeroinitializer
  %2488 = select <2 x i1> %2482, <2 x double> %2449, <2 x double> %2487
  %2489 = icmp samesign ugt i64 %2447, 1
  br i1 %2489, label %2445, label %2490, !llvm.loop !87

2490:                                             ; preds = %2474, %2470, %2393
  %2491 = phi <2 x double> [ %2433, %2393 ], [ %2449, %2470 ], [ %2488, %2474 ]
  %2492 = phi <2 x double> [ zeroinitializer, %2393 ], [ %2471, %2470 ], [ %2484, %2474 ]
  %2493 = getelementptr inbounds nuw i8, ptr %2396, i64 1520
  %2494 = load <2 x double>, ptr %2493, align 16, !tbaa !25, !noalias !96
  %2495 = getelementptr inbounds nuw i8, ptr %2396, i64 1376
  %2496 = load <2 x double>, ptr %2495, align 16, !tbaa !25, !noalias !96
  %2497 = getelementptr inbounds nuw i8, ptr %2396, i64 1760
  %2498 = load <2 x double>, ptr %2497, align 16, !tbaa !25, !noalias !96
  %2499 = fneg <2 x double> %2498
  %2500 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2494, <2 x double> %2496, <2 x double> %2499)
  %2501 = getelementptr inbounds nuw i8, ptr %2396, i64 1744
  %2502 = load <2 x double>, ptr %2501, align 16, !tbaa !25, !noalias !96
  %2503 = fadd <2 x double> %2494, %2502
  %2504 = getelementptr inbounds nuw i8, ptr %2396, i64 1840
  %2505 = load <2 x i64>, ptr %2504, align 16, !tbaa !25, !noalias !96
  %2506 = getelementptr inbounds nuw i8, ptr %2396, i64 2048
  %2507 = load ptr, ptr %2506, align 16, !tbaa !75, !noalias !96
  %2508 = load <2 x double>, ptr %2507, align 16, !tbaa !25, !noalias !96
  %2509 = fmul <2 x double> %2494, %2508
  %2510 = icmp eq <2 x i64> %2505, zeroinitializer
  %2511 = select <2 x i1> %2510, <2 x double> %2500, <2 x double> %2509
  %2512 = getelementptr inbounds nuw i8, ptr %2396, i64 2056
  %2513 = load ptr, ptr %2512, align 8, !tbaa !76, !noalias !96
  %2514 = load <2 x double>, ptr %2513, align 16, !tbaa !25, !noalias !96
  %2515 = fsub <2 x double> splat (double 1.000000e+00), %2514
  %2516 = fmul <2 x double> %2494, %2515
  %2517 = select <2 x i1> %2510, <2 x double> %2503, <2 x double> %2516
  %2518 = fneg <2 x double> %2517
  %2519 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2518, <2 x double> %1897, <2 x double> %2511)
  %2520 = fcmp olt <2 x double> %2491, %2433
  %2521 = and <2 x i1> %2403, %2520
  %2522 = fcmp ogt <2 x double> %2492, zeroinitializer
  %2523 = fcmp oge <2 x double> %2519, zeroinitializer
  %2524 = and <2 x i1> %2522, %2523
  %2525 = and <2 x i1> %2521, %2524
  %2526 = sext <2 x i1> %2525 to <2 x i64>
  %2527 = xor <2 x i64> %2526, splat (i64 -1)
  %2528 = fadd <2 x double> %2492, %2519
  %2529 = fcmp ogt <2 x double> %2528, zeroinitializer
  %2530 = and <2 x i1> %2521, %2529
  %2531 = select <2 x i1> %2530, <2 x i64> %2527, <2 x i64> zeroinitializer
  %2532 = or <2 x i64> %2531, %2526
  %2533 = fmul <2 x double> %2391, %2519
  %2534 = select <2 x i1> %2525, <2 x double> %2533, <2 x double> zeroinitializer
  %2535 = icmp eq <2 x i64> %2532, zeroinitializer
  %2536 = select <2 x i1> %2535, <2 x double> %2428, <2 x double> %2534
  %2537 = select <2 x i1> %2535, <2 x double> %2429, <2 x double> %1897
  %2538 = getelementptr inbounds nuw i8, ptr %2396, i64 1408
  store <2 x double> %2536, ptr %2538, align 16, !tbaa !25, !noalias !96
  %2539 = getelementptr inbounds nuw i8, ptr %2396, i64 1392
  store <2 x double> %2537, ptr %2539, align 16, !tbaa !25, !noalias !96
  %2540 = fmul <2 x double> %2391, %2492
  %2541 = fmul <2 x double> %2391, %2528
  %2542 = icmp eq <2 x i64> %2531, zeroinitializer
  %2543 = select <2 x i1> %2542, <2 x double> zeroinitializer, <2 x double> %2541
  %2544 = select <2 x i1> %2525, <2 x double> %2540, <2 x double> %2543
  %2545 = getelementptr inbounds nuw i8, ptr %2396, i64 1424
  store <2 x double> %2544, ptr %2545, align 16, !tbaa !25, !noalias !96
  %2546 = load i64, ptr %131, align 8, !tbaa !20, !noalias !96
  %2547 = sitofp i64 %2546 to double
  %2548 = insertelement <2 x double> poison, double %2547, i64 0
  %2549 = shufflevector <2 x double> %2548, <2 x double> poison, <2 x i32> zeroinitializer
  %2550 = select <2 x i1> %2535, <2 x double> %2549, <2 x double> %2491
  %2551 = getelementptr inbounds nuw i8, ptr %2396, i64 1440
  store <2 x double> %2550, ptr %2551, align 16, !tbaa !25, !noalias !96
  %2552 = add nuw nsw i64 %2394, 1
  %2553 = load i64, ptr %140, align 16, !tbaa !16, !noalias !96
  %2554 = icmp slt i64 %2552, %2553
  br i1 %2554, label %2393, label %2555, !llvm.loop !88

2555:                                             ; preds = %2490, %2348
  %2556 = phi i64 [ %2384, %2348 ], [ %2553, %2490 ]
  %2557 = icmp sgt i64 %2556, 0
  br i1 %2557, label %2723, label %2558

2558:                                             ; preds = %2555, %2385
  %2559 = phi i64 [ %2556, %2555 ], [ %2386, %2385 ]
  %2560 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %2561 = load <2 x double>, ptr %195, align 16, !tbaa !25
  br label %2637

2562:                                             ; preds = %2796
  %2563 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %2564 = load <2 x double>, ptr %195, align 16, !tbaa !25
  %2565 = icmp sgt i64 %2820, 0
  br i1 %2565, label %2566, label %2637

2566:                                             ; preds = %2562
  %2567 = load ptr, ptr %141, align 8, !tbaa !27
  %2568 = and i64 %2820, 1
  %2569 = icmp eq i64 %2820, 1
  br i1 %2569, label %2613, label %2570

2570:                                             ; preds = %2566
  %2571 = and i64 %2820, 9223372036854775806
  br label %2572

2572:                                             ; preds = %2572, %2570
  %2573 = phi <2 x double> [ zeroinitializer, %2570 ], [ %2604, %2572 ]
  %2574 = phi <2 x double> [ %2564, %2570 ], [ %2609, %2572 ]
  %2575 = phi i64 [ 0, %2570 ], [ %2610, %2572 ]
  %2576 = phi i64 [ 0, %2570 ], [ %2611, %2572 ]
  %2577 = getelementptr inbounds nuw %struct.Piece, ptr %2567, i64 %2575
  %2578 = getelementptr inbounds nuw i8, ptr %2577, i64 1872
  %2579 = load <2 x i64>, ptr %2578, align 16, !tbaa !25
  %2580 = getelementptr inbounds nuw i8, ptr %2577, i64 32
  %2581 = load <2 x double>, ptr %2580, align 16, !tbaa !25
  %2582 = getelementptr inbounds nuw i8, ptr %2577, i64 1584
  %2583 = load <2 x double>, ptr %2582, align 16, !tbaa !25
  %2584 = fmul <2 x double> %2581, %2583
  %2585 = icmp eq <2 x i64> %2579, zeroinitializer
  %2586 = select <2 x i1> %2585, <2 x double> %2584, <2 x double> zeroinitializer
  %2587 = fadd <2 x double> %2573, %2586
  %2588 = getelementptr inbounds nuw i8, ptr %2577, i64 1552
  %2589 = load <2 x double>, ptr %2588, align 16, !tbaa !25
  %2590 = fmul <2 x double> %2581, %2589
  %2591 = select <2 x i1> %2585, <2 x double> %2590, <2 x double> zeroinitializer
  %2592 = fadd <2 x double> %2574, %2591
  %2593 = or disjoint i64 %2575, 1
  %2594 = getelementptr inbounds nuw %struct.Piece, ptr %2567, i64 %2593
  %2595 = getelementptr inbounds nuw i8, ptr %2594, i64 1872
  %2596 = load <2 x i64>, ptr %2595, align 16, !tbaa !25
  %2597 = getelementptr inbounds nuw i8, ptr %2594, i64 32
  %2598 = load <2 x double>, ptr %2597, align 16, !tbaa !25
  %2599 = getelementptr inbounds nuw i8, ptr %2594, i64 1584
  %2600 = load <2 x double>, ptr %2599, align 16, !tbaa !25
  %2601 = fmul <2 x double> %2598, %2600
  %2602 = icmp eq <2 x i64> %2596, zeroinitializer
  %2603 = select <2 x i1> %2602, <2 x double> %2601, <2 x double> zeroinitializer
  %2604 = fadd <2 x double> %2587, %2603
  %2605 = getelementptr inbounds nuw i8, ptr %2594, i64 1552
  %2606 = load <2 x double>, ptr %2605, align 16, !tbaa !25
  %2607 = fmul <2 x double> %2598, %2606
  %2608 = select <2 x i1> %2602, <2 x double> %2607, <2 x double> zeroinitializer
  %2609 = fadd <2 x double> %2592, %2608
  %2610 = add nuw nsw i64 %2575, 2
  %2611 = add i64 %2576, 2
  %2612 = icmp eq i64 %2611, %2571
  br i1 %2612, label %2613, label %2572, !llvm.loop !102

2613:                                             ; preds = %2572, %2566
  %2614 = phi <2 x double> [ poison, %2566 ], [ %2604, %2572 ]
  %2615 = phi <2 x double> [ poison, %2566 ], [ %2609, %2572 ]
  %2616 = phi <2 x double> [ zeroinitializer, %2566 ], [ %2604, %2572 ]
  %2617 = phi <2 x double> [ %2564, %2566 ], [ %2609, %2572 ]
  %2618 = phi i64 [ 0, %2566 ], [ %2610, %2572 ]
  %2619 = icmp eq i64 %2568, 0
  br i1 %2619, label %2637, label %2620

2620:                                             ; preds = %2613
  %2621 = getelementptr inbounds nuw %struct.Piece, ptr %2567, i64 %2618
  %2622 = getelementptr inbounds nuw i8, ptr %2621, i64 1872
  %2623 = load <2 x i64>, ptr %2622, align 16, !tbaa !25
  %2624 = getelementptr inbounds nuw i8, ptr %2621, i64 32
  %2625 = load <2 x double>, ptr %2624, align 16, !tbaa !25
  %2626 = getelementptr inbounds nuw i8, ptr %2621, i64 1584
  %2627 = load <2 x double>, ptr %2626, align 16, !tbaa !25
  %2628 = fmul <2 x double> %2625, %2627
  %2629 = icmp eq <2 x i64> %2623, zeroinitializer
  %2630 = select <2 x i1> %2629, <2 x double> %2628, <2 x double> zeroinitializer
  %2631 = fadd <2 x double> %2616, %2630
  %2632 = getelementptr inbounds nuw i8, ptr %2621, i64 1552
  %2633 = load <2 x double>, ptr %2632, align 16, !tbaa !25
  %2634 = fmul <2 x double> %2625, %2633
  %2635 = select <2 x i1> %2629, <2 x double> %2634, <2 x double> zeroinitializer
  %2636 = fadd <2 x double> %2617, %2635
  br label %2637

2637:                                             ; preds = %2620, %2613, %2558, %2562
  %2638 = phi i1 [ false, %2562 ], [ false, %2558 ], [ true, %2613 ], [ true, %2620 ]
  %2639 = phi <2 x double> [ %2564, %2562 ], [ %2561, %2558 ], [ %2564, %2613 ], [ %2564, %2620 ]
  %2640 = phi <2 x double> [ %2563, %2562 ], [ %2560, %2558 ], [ %2563, %2613 ], [ %2563, %2620 ]
  %2641 = phi i64 [ %2820, %2562 ], [ %2559, %2558 ], [ %2820, %2613 ], [ %2820, %2620 ]
  %2642 = phi <2 x double> [ %2564, %2562 ], [ %2561, %2558 ], [ %2615, %2613 ], [ %2636, %2620 ]
  %2643 = phi <2 x double> [ zeroinitializer, %2562 ], [ zeroinitializer, %2558 ], [ %2614, %2613 ], [ %2631, %2620 ]
  %2644 = load <2 x double>, ptr %178, align 16, !tbaa !25
  %2645 = fsub <2 x double> %2640, %2644
  %2646 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2639, <2 x double> %2645, <2 x double> %2643)
  %2647 = load <2 x double>, ptr %196, align 16, !tbaa !25
  %2648 = fcmp ule <2 x double> %2647, zeroinitializer
  %2649 = load <2 x double>, ptr %197, align 16, !tbaa !25
  %2650 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2647, <2 x double> splat (double 5.000000e-01), <2 x double> %2649)
  %2651 = fsub <2 x double> %2650, %2640
  %2652 = fcmp ogt <2 x double> %2647, splat (double 1.000000e-30)
  %2653 = select <2 x i1> %2652, <2 x double> %2647, <2 x double> splat (double 1.000000e-30)
  %2654 = fdiv <2 x double> %2651, %2653
  %2655 = fcmp ogt <2 x double> %2654, zeroinitializer
  %2656 = select <2 x i1> %2655, <2 x double> %2654, <2 x double> zeroinitializer
  %2657 = fcmp olt <2 x double> %2656, splat (double 1.000000e+00)
  %2658 = select <2 x i1> %2657, <2 x double> %2656, <2 x double> splat (double 1.000000e+00)
  %2659 = load <2 x double>, ptr %198, align 16, !tbaa !25
  %2660 = load <2 x i64>, ptr %199, align 16, !tbaa !25
  %2661 = icmp eq <2 x i64> %2660, zeroinitializer
  %2662 = select <2 x i1> %2661, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %2663 = select <2 x i1> %2648, <2 x double> %2662, <2 x double> %2658
  %2664 = fmul <2 x double> %2659, %2663
  %2665 = fcmp ule <2 x double> %2664, zeroinitializer
  %2666 = fcmp uge <2 x double> %2664, %2659
  %2667 = or <2 x i1> %2665, %2666
  %2668 = or <2 x i1> %2648, %2667
  %2669 = fdiv <2 x double> %2659, %2653
  %2670 = select <2 x i1> %2668, <2 x double> zeroinitializer, <2 x double> %2669
  %2671 = fadd <2 x double> %2642, %2670
  %2672 = load <2 x double>, ptr %158, align 16, !tbaa !25
  %2673 = load <2 x double>, ptr %1, align 16, !tbaa !25
  %2674 = fmul <2 x double> %2640, %2673
  %2675 = load <2 x double>, ptr %200, align 16, !tbaa !25
  %2676 = load <2 x double>, ptr %201, align 16, !tbaa !25
  %2677 = fmul <2 x double> %2676, splat (double 5.000000e-01)
  %2678 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2677, <2 x double> %2640, <2 x double> %2675)
  %2679 = load <2 x double>, ptr %202, align 16, !tbaa !25
  %2680 = fmul <2 x double> %2640, %2679
  %2681 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2674, <2 x double> %2678, <2 x double> %2680)
  %2682 = load <2 x double>, ptr %159, align 16, !tbaa !25
  %2683 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %2684 = fmul <2 x double> %2673, %2683
  %2685 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2677, <2 x double> %2683, <2 x double> %2675)
  %2686 = fmul <2 x double> %2679, %2683
  %2687 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2684, <2 x double> %2685, <2 x double> %2686)
  %2688 = fmul <2 x double> %2682, %2687
  %2689 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2672, <2 x double> %2681, <2 x double> %2688)
  %2690 = load <2 x double>, ptr %160, align 16, !tbaa !25
  %2691 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %2692 = fmul <2 x double> %2673, %2691
  %2693 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2677, <2 x double> %2691, <2 x double> %2675)
  %2694 = fmul <2 x double> %2679, %2691
  %2695 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2692, <2 x double> %2693, <2 x double> %2694)
  %2696 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2690, <2 x double> %2695, <2 x double> %2689)
  %2697 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2676, <2 x double> %2640, <2 x double> %2675)
  %2698 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2673, <2 x double> %2697, <2 x double> %2679)
  %2699 = load <2 x double>, ptr %164, align 16, !tbaa !25
  %2700 = fcmp une <2 x double> %2699, zeroinitializer
  %2701 = fadd <2 x double> %2646, %2696
  %2702 = fsub <2 x double> %2701, %2664
  %2703 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2672, <2 x double> %2698, <2 x double> %2671)
  %2704 = fdiv <2 x double> %2702, %2703
  %2705 = fsub <2 x double> %2640, %2704
  %2706 = select <2 x i1> %2700, <2 x double> %2640, <2 x double> %2705
  store <2 x double> %2706, ptr %161, align 16, !tbaa !25
  %2707 = load <2 x double>, ptr %203, align 16, !tbaa !25
  %2708 = fneg <2 x double> %2682
  %2709 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2708, <2 x double> %2707, <2 x double> %2664)
  %2710 = load <2 x double>, ptr %204, align 16, !tbaa !25
  %2711 = fneg <2 x double> %2690
  %2712 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2711, <2 x double> %2710, <2 x double> %2709)
  %2713 = fdiv <2 x double> %2712, %2672
  %2714 = load <2 x double>, ptr %205, align 16, !tbaa !25
  %2715 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2708, <2 x double> %2714, <2 x double> %2646)
  %2716 = load <2 x double>, ptr %206, align 16, !tbaa !25
  %2717 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2711, <2 x double> %2716, <2 x double> %2715)
  %2718 = fdiv <2 x double> %2717, %2672
  %2719 = load <2 x double>, ptr %207, align 16, !tbaa !25
  %2720 = select <2 x i1> %2700, <2 x double> %2719, <2 x double> %2713
  store <2 x double> %2720, ptr %207, align 16, !tbaa !25
  %2721 = load <2 x double>, ptr %208, align 16, !tbaa !25
  %2722 = select <2 x i1> %2700, <2 x double> %2721, <2 x double> %2718
  store <2 x double> %2722, ptr %208, align 16, !tbaa !25
  br i1 %2638, label %2822, label %3122

2723:                                             ; preds = %2555, %2796
  %2724 = phi i64 [ %2819, %2796 ], [ 0, %2555 ]
  %2725 = load ptr, ptr %141, align 8, !tbaa !27
  %2726 = getelementptr inbounds nuw %struct.Piece, ptr %2725, i64 %2724
  %2727 = getelementptr inbounds nuw i8, ptr %2726, i64 1392
  %2728 = load <2 x double>, ptr %2727, align 16, !tbaa !25
  %2729 = load i64, ptr %131, align 8, !tbaa !20
  %2730 = icmp sgt i64 %2729, 0
  br i1 %2730, label %2731, label %2736

2731:                                             ; preds = %2723
  %2732 = getelementptr inbounds nuw i8, ptr %2726, i64 1440
  %2733 = getelementptr inbounds nuw i8, ptr %2726, i64 1944
  %2734 = getelementptr inbounds nuw i8, ptr %2726, i64 1952
  %2735 = getelementptr inbounds nuw i8, ptr %2726, i64 1896
  br label %2751

2736:                                             ; preds = %2751, %2723
  %2737 = getelementptr inbounds nuw i8, ptr %2726, i64 1840
  %2738 = load <2 x i64>, ptr %2737, align 16, !tbaa !25
  %2739 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2738)
  %2740 = icmp eq i64 %2739, 0
  %2741 = load i64, ptr %132, align 16, !tbaa !21
  %2742 = icmp sgt i64 %2741, 0
  br i1 %2740, label %2748, label %2743

2743:                                             ; preds = %2736
  br i1 %2742, label %2744, label %2796

2744:                                             ; preds = %2743
  %2745 = getelementptr inbounds nuw i8, ptr %2726, i64 2048
  %2746 = getelementptr inbounds nuw i8, ptr %2726, i64 2056
  %2747 = getelementptr inbounds nuw i8, ptr %2726, i64 2016
  br label %2771

2748:                                             ; preds = %2736
  br i1 %2742, label %2749, label %2796

2749:                                             ; preds = %2748
  %2750 = getelementptr inbounds nuw i8, ptr %2726, i64 2016
  br label %2789

2751:                                             ; preds = %2731, %2751
  %2752 = phi <2 x double> [ %2728, %2731 ], [ %2767, %2751 ]
  %2753 = phi i64 [ %2729, %2731 ], [ %2754, %2751 ]
  %2754 = add nsw i64 %2753, -1
  %2755 = load <2 x double>, ptr %2732, align 16, !tbaa !25
  %2756 = uitofp nneg i64 %2754 to double
  %2757 = insertelement <2 x double> poison, double %2756, i64 0
  %2758 = shufflevector <2 x double> %2757, <2 x double> poison, <2 x i32> zeroinitializer
  %2759 = fcmp ugt <2 x double> %2755, %2758
  %2760 = load ptr, ptr %2733, align 8, !tbaa !70
  %2761 = getelementptr inbounds nuw <2 x double>, ptr %2760, i64 %2754
  %2762 = load <2 x double>, ptr %2761, align 16, !tbaa !25
  %2763 = load ptr, ptr %2734, align 16, !tbaa !71
  %2764 = getelementptr inbounds nuw <2 x double>, ptr %2763, i64 %2754
  %2765 = load <2 x double>, ptr %2764, align 16, !tbaa !25
  %2766 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2765, <2 x double> %2752, <2 x double> %2762)
  %2767 = select <2 x i1> %2759, <2 x double> %2766, <2 x double> %2728
  %2768 = load ptr, ptr %2735, align 8, !tbaa !56
  %2769 = getelementptr inbounds nuw <2 x double>, ptr %2768, i64 %2754
  store <2 x double> %2767, ptr %2769, align 16, !tbaa !25
  %2770 = icmp samesign ugt i64 %2753, 1
  br i1 %2770, label %2751, label %2736, !llvm.loop !103

2771:                                             ; preds = %2744, %2771
  %2772 = phi i64 [ 0, %2744 ], [ %2786, %2771 ]
  %2773 = phi <2 x double> [ %2728, %2744 ], [ %2783, %2771 ]
  %2774 = load <2 x i64>, ptr %2737, align 16, !tbaa !25
  %2775 = load ptr, ptr %2745, align 16, !tbaa !75
  %2776 = getelementptr inbounds nuw <2 x double>, ptr %2775, i64 %2772
  %2777 = load <2 x double>, ptr %2776, align 16, !tbaa !25
  %2778 = load ptr, ptr %2746, align 8, !tbaa !76
  %2779 = getelementptr inbounds nuw <2 x double>, ptr %2778, i64 %2772
  %2780 = load <2 x double>, ptr %2779, align 16, !tbaa !25
  %2781 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2780, <2 x double> %2773, <2 x double> %2777)
  %2782 = icmp eq <2 x i64> %2774, zeroinitializer
  %2783 = select <2 x i1> %2782, <2 x double> %2728, <2 x double> %2781
  %2784 = load ptr, ptr %2747, align 16, !tbaa !104
  %2785 = getelementptr inbounds nuw <2 x double>, ptr %2784, i64 %2772
  store <2 x double> %2783, ptr %2785, align 16, !tbaa !25
  %2786 = add nuw nsw i64 %2772, 1
  %2787 = load i64, ptr %132, align 16, !tbaa !21
  %2788 = icmp slt i64 %2786, %2787
  br i1 %2788, label %2771, label %2796, !llvm.loop !105

2789:                                             ; preds = %2749, %2789
  %2790 = phi i64 [ 0, %2749 ], [ %2793, %2789 ]
  %2791 = load ptr, ptr %2750, align 16, !tbaa !104
  %2792 = getelementptr inbounds nuw <2 x double>, ptr %2791, i64 %2790
  store <2 x double> %2728, ptr %2792, align 16, !tbaa !25
  %2793 = add nuw nsw i64 %2790, 1
  %2794 = load i64, ptr %132, align 16, !tbaa !21
  %2795 = icmp slt i64 %2793, %2794
  br i1 %2795, label %2789, label %2796, !llvm.loop !106

2796:                                             ; preds = %2771, %2789, %2743, %2748
  %2797 = phi <2 x double> [ %2728, %2748 ], [ %2728, %2743 ], [ %2728, %2789 ], [ %2783, %2771 ]
  %2798 = load <2 x i64>, ptr %2737, align 16, !tbaa !25
  %2799 = getelementptr inbounds nuw i8, ptr %2726, i64 1568
  %2800 = load <2 x double>, ptr %2799, align 16, !tbaa !25
  %2801 = icmp eq <2 x i64> %2798, zeroinitializer
  %2802 = select <2 x i1> %2801, <2 x double> zeroinitializer, <2 x double> %2800
  %2803 = fsub <2 x double> splat (double 1.000000e+00), %2802
  %2804 = getelementptr inbounds nuw i8, ptr %2726, i64 1376
  %2805 = load <2 x double>, ptr %2804, align 16, !tbaa !25
  %2806 = fmul <2 x double> %2802, %2805
  %2807 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2803, <2 x double> %2797, <2 x double> %2806)
  %2808 = getelementptr inbounds nuw i8, ptr %2726, i64 1616
  store <2 x double> %2807, ptr %2808, align 16, !tbaa !25
  %2809 = getelementptr inbounds nuw i8, ptr %2726, i64 1552
  %2810 = load <2 x double>, ptr %2809, align 16, !tbaa !25
  %2811 = fsub <2 x double> %2805, %2797
  %2812 = fmul <2 x double> %2811, %2810
  %2813 = getelementptr inbounds nuw i8, ptr %2726, i64 1584
  store <2 x double> %2812, ptr %2813, align 16, !tbaa !25
  %2814 = getelementptr inbounds nuw i8, ptr %2726, i64 800
  %2815 = load <2 x double>, ptr %2814, align 16, !tbaa !25
  %2816 = fdiv <2 x double> %2812, %2815
  %2817 = fsub <2 x double> %2805, %2816
  %2818 = getelementptr inbounds nuw i8, ptr %2726, i64 1600
  store <2 x double> %2817, ptr %2818, align 16, !tbaa !25
  %2819 = add nuw nsw i64 %2724, 1
  %2820 = load i64, ptr %140, align 16, !tbaa !16
  %2821 = icmp slt i64 %2819, %2820
  br i1 %2821, label %2723, label %2562, !llvm.loop !107

2822:                                             ; preds = %2637, %3077
  %2823 = phi i64 [ %3119, %3077 ], [ 0, %2637 ]
  %2824 = phi <2 x double> [ %3118, %3077 ], [ zeroinitializer, %2637 ]
  %2825 = load ptr, ptr %141, align 8, !tbaa !27
  %2826 = getelementptr inbounds nuw %struct.Piece, ptr %2825, i64 %2823
  %2827 = getelementptr inbounds nuw i8, ptr %2826, i64 1408
  %2828 = load <2 x double>, ptr %2827, align 16, !tbaa !25
  %2829 = getelementptr inbounds nuw i8, ptr %2826, i64 1424
  %2830 = load <2 x double>, ptr %2829, align 16, !tbaa !25
  %2831 = fadd <2 x double> %2828, %2830
  %2832 = getelementptr inbounds nuw i8, ptr %2826, i64 1392
  %2833 = load <2 x double>, ptr %2832, align 16, !tbaa !25
  %2834 = load <2 x double>, ptr %194, align 16, !tbaa !25
  %2835 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2834, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2836 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2834, <2 x double> %2835, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2837 = getelementptr inbounds nuw i8, ptr %2826, i64 1328
  %2838 = load <2 x double>, ptr %2837, align 16, !tbaa !25
  %2839 = getelementptr inbounds nuw i8, ptr %2826, i64 1008
  %2840 = load <2 x double>, ptr %2839, align 16, !tbaa !25
  %2841 = fneg <2 x double> %2838
  %2842 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2841, <2 x double> %2840, <2 x double> %2831)
  %2843 = getelementptr inbounds nuw i8, ptr %2826, i64 1344
  %2844 = load <2 x double>, ptr %2843, align 16, !tbaa !25
  %2845 = getelementptr inbounds nuw i8, ptr %2826, i64 1200
  %2846 = load <2 x double>, ptr %2845, align 16, !tbaa !25
  %2847 = fneg <2 x double> %2844
  %2848 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2847, <2 x double> %2846, <2 x double> %2842)
  %2849 = getelementptr inbounds nuw i8, ptr %2826, i64 1312
  %2850 = load <2 x double>, ptr %2849, align 16, !tbaa !25
  %2851 = fdiv <2 x double> %2848, %2850
  %2852 = getelementptr inbounds nuw i8, ptr %2826, i64 400
  %2853 = load <2 x double>, ptr %2852, align 16, !tbaa !25
  %2854 = fsub <2 x double> %2853, %2851
  %2855 = getelementptr inbounds nuw i8, ptr %2826, i64 976
  %2856 = load <2 x double>, ptr %2855, align 16, !tbaa !25
  %2857 = getelementptr inbounds nuw i8, ptr %2826, i64 1792
  %2858 = load <2 x double>, ptr %2857, align 16, !tbaa !25
  %2859 = fsub <2 x double> %2856, %2858
  %2860 = getelementptr inbounds nuw i8, ptr %2826, i64 1696
  %2861 = load <2 x double>, ptr %2860, align 16, !tbaa !25
  %2862 = getelementptr inbounds nuw i8, ptr %2826, i64 320
  %2863 = load <2 x double>, ptr %2862, align 16, !tbaa !25
  %2864 = fmul <2 x double> %2861, %2863
  %2865 = getelementptr inbounds nuw i8, ptr %2826, i64 1616
  %2866 = load <2 x double>, ptr %2865, align 16, !tbaa !25
  %2867 = fsub <2 x double> %2866, %2833
  %2868 = fmul <2 x double> %2864, %2867
  %2869 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2836, <2 x double> %2831, <2 x double> %2868)
  %2870 = fsub <2 x double> %2854, %2859
  %2871 = getelementptr inbounds nuw i8, ptr %2826, i64 736
  %2872 = getelementptr inbounds nuw i8, ptr %2826, i64 768
  %2873 = load <2 x double>, ptr %2872, align 16, !tbaa !25
  %2874 = fsub <2 x double> %2870, %2873
  %2875 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2874)
  %2876 = getelementptr inbounds nuw i8, ptr %2826, i64 208
  %2877 = load <2 x double>, ptr %2876, align 16, !tbaa !25
  %2878 = fdiv <2 x double> %2875, %2877
  %2879 = getelementptr inbounds nuw i8, ptr %2826, i64 1840
  %2880 = load <2 x i64>, ptr %2879, align 16, !tbaa !25
  %2881 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2880)
  %2882 = icmp eq i64 %2881, 0
  br i1 %2882, label %3077, label %2883

2883:                                             ; preds = %2822
  %2884 = getelementptr inbounds nuw i8, ptr %2826, i64 944
  %2885 = load <2 x double>, ptr %2884, align 16, !tbaa !25
  %2886 = fcmp ogt <2 x double> %2859, %2854
  %2887 = getelementptr inbounds nuw i8, ptr %2826, i64 1824
  %2888 = load <2 x double>, ptr %2887, align 16, !tbaa !25
  %2889 = fcmp oeq <2 x double> %2888, zeroinitializer
  %2890 = select <2 x i1> %2889, <2 x i1> %2886, <2 x i1> zeroinitializer
  %2891 = select <2 x i1> %2890, <2 x i64> %2880, <2 x i64> zeroinitializer
  %2892 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2891)
  %2893 = icmp eq i64 %2892, 0
  br i1 %2893, label %2964, label %2894

2894:                                             ; preds = %2883
  %2895 = fsub <2 x double> %2859, %2854
  %2896 = fdiv <2 x double> %2895, %2877
  %2897 = getelementptr inbounds nuw i8, ptr %2826, i64 1928
  %2898 = load ptr, ptr %2897, align 8, !tbaa !59
  %2899 = load i64, ptr %131, align 8, !tbaa !20
  %2900 = add nsw i64 %2899, -1
  %2901 = getelementptr inbounds <2 x double>, ptr %2898, i64 %2900
  %2902 = load <2 x double>, ptr %2901, align 16, !tbaa !25
  %2903 = icmp sgt i64 %2899, 1
  br i1 %2903, label %2904, label %2956

2904:                                             ; preds = %2894
  %2905 = getelementptr inbounds nuw i8, ptr %2826, i64 1888
  %2906 = load i64, ptr %2905, align 16, !tbaa !30
  %2907 = getelementptr inbounds nuw i8, ptr %2826, i64 1104
  %2908 = getelementptr inbounds nuw i8, ptr %2826, i64 384
  %2909 = getelementptr inbounds nuw i8, ptr %2826, i64 1984
  br label %2910

2910:                                             ; preds = %2904, %2953
  %2911 = phi <2 x double> [ %2885, %2904 ], [ %2948, %2953 ]
  %2912 = phi i64 [ %2900, %2904 ], [ %2954, %2953 ]
  %2913 = phi <2 x double> [ %2902, %2904 ], [ %2936, %2953 ]
  %2914 = phi <2 x i64> [ %2891, %2904 ], [ %2940, %2953 ]
  %2915 = phi <2 x double> [ %2896, %2904 ], [ %2947, %2953 ]
  %2916 = icmp slt i64 %2912, %2906
  br i1 %2916, label %2917, label %2923

2917:                                             ; preds = %2910
  %2918 = load ptr, ptr %2909, align 16, !tbaa !66
  %2919 = getelementptr inbounds nuw <2 x double>, ptr %2918, i64 %2912
  %2920 = load <2 x double>, ptr %2919, align 16, !tbaa !25
  %2921 = load <2 x double>, ptr %2908, align 16, !tbaa !25
  %2922 = fmul <2 x double> %2920, %2921
  br label %2931

2923:                                             ; preds = %2910
  %2924 = load <2 x double>, ptr %2907, align 16, !tbaa !25
  %2925 = load <2 x double>, ptr %2908, align 16, !tbaa !25
  %2926 = load ptr, ptr %2909, align 16, !tbaa !66
  %2927 = getelementptr inbounds nuw <2 x double>, ptr %2926, i64 %2912
  %2928 = load <2 x double>, ptr %2927, align 16, !tbaa !25
  %2929 = fsub <2 x double> %2924, %2925
  %2930 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2928, <2 x double> %2929, <2 x double> %2925)
  br label %2931

2931:                                             ; preds = %2917, %2923
  %2932 = phi <2 x double> [ %2922, %2917 ], [ %2930, %2923 ]
  %2933 = getelementptr inbounds nuw <2 x double>, ptr %2898, i64 %2912
  %2934 = load <2 x double>, ptr %2933, align 16, !tbaa !25
  %2935 = icmp eq <2 x i64> %2914, zeroinitializer
  %2936 = select <2 x i1> %2935, <2 x double> %2913, <2 x double> %2934
  %2937 = fsub <2 x double> %2911, %2932
  %2938 = fmul <2 x double> %2937, %2936
  %2939 = fcmp olt <2 x double> %2938, %2915
  %2940 = select <2 x i1> %2939, <2 x i64> %2914, <2 x i64> zeroinitializer
  %2941 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2940)
  %2942 = icmp eq i64 %2941, 0
  br i1 %2942, label %2956, label %2943

2943:                                             ; preds = %2931
  %2944 = fneg <2 x double> %2936
  %2945 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2944, <2 x double> %2937, <2 x double> %2915)
  %2946 = icmp eq <2 x i64> %2940, zeroinitializer
  %2947 = select <2 x i1> %2946, <2 x double> %2915, <2 x double> %2945
  %2948 = select <2 x i1> %2946, <2 x double> %2911, <2 x double> %2932
  %2949 = icmp eq i64 %2912, 1
  br i1 %2949, label %2950, label %2953

2950:                                             ; preds = %2943
  %2951 = load <2 x double>, ptr %2898, align 16, !tbaa !25
  %2952 = select <2 x i1> %2946, <2 x double> %2936, <2 x double> %2951
  br label %2956

2953:                                             ; preds = %2943
  %2954 = add nsw i64 %2912, -1
  %2955 = icmp sgt i64 %2912, 1
  br i1 %2955, label %2910, label %2956, !llvm.loop !108

2956:                                             ; preds = %2953, %2931, %2950, %2894
  %2957 = phi <2 x double> [ %2896, %2894 ], [ %2947, %2950 ], [ %2915, %2931 ], [ %2947, %2953 ]
  %2958 = phi <2 x double> [ %2885, %2894 ], [ %2948, %2950 ], [ %2911, %2931 ], [ %2948, %2953 ]
  %2959 = phi <2 x double> [ %2902, %2894 ], [ %2952, %2950 ], [ %2936, %2931 ], [ %2936, %2953 ]
  %2960 = fdiv <2 x double> %2957, %2959
  %2961 = fsub <2 x double> %2958, %2960
  %2962 = icmp eq <2 x i64> %2891, zeroinitializer
  %2963 = select <2 x i1> %2962, <2 x double> %2885, <2 x double> %2961
  br label %2964

2964:                                             ; preds = %2956, %2883
  %2965 = phi <2 x double> [ %2963, %2956 ], [ %2885, %2883 ]
  %2966 = load <2 x double>, ptr %2871, align 16, !tbaa !25
  %2967 = getelementptr inbounds nuw i8, ptr %2826, i64 640
  %2968 = load <2 x double>, ptr %2967, align 16, !tbaa !25
  %2969 = getelementptr inbounds nuw i8, ptr %2826, i64 656
  %2970 = load <2 x double>, ptr %2969, align 16, !tbaa !25
  %2971 = getelementptr inbounds nuw i8, ptr %2826, i64 672
  %2972 = load <2 x double>, ptr %2971, align 16, !tbaa !25
  %2973 = getelementptr inbounds nuw i8, ptr %2826, i64 688
  %2974 = load <2 x double>, ptr %2973, align 16, !tbaa !25
  %2975 = load <2 x double>, ptr %2826, align 16, !tbaa !25
  %2976 = fmul <2 x double> %2975, splat (double 1.000000e-09)
  %2977 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2966, <2 x double> %2974, <2 x double> %2972)
  %2978 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2966, <2 x double> %2977, <2 x double> %2970)
  %2979 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2966, <2 x double> %2978, <2 x double> %2968)
  %2980 = fsub <2 x double> %2979, %2965
  %2981 = fmul <2 x double> %2966, splat (double 3.000000e+00)
  %2982 = fmul <2 x double> %2981, %2974
  %2983 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2972, <2 x double> splat (double 2.000000e+00), <2 x double> %2982)
  %2984 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2966, <2 x double> %2983, <2 x double> %2970)
  %2985 = fdiv <2 x double> %2980, %2984
  %2986 = fsub <2 x double> %2966, %2985
  %2987 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2985)
  %2988 = fcmp oge <2 x double> %2987, %2976
  %2989 = bitcast <2 x i1> %2988 to i2
  %2990 = icmp eq i2 %2989, 0
  br i1 %2990, label %3037, label %2991, !llvm.loop !109

2991:                                             ; preds = %2964
  %2992 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2986, <2 x double> %2974, <2 x double> %2972)
  %2993 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2986, <2 x double> %2992, <2 x double> %2970)
  %2994 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2986, <2 x double> %2993, <2 x double> %2968)
  %2995 = fsub <2 x double> %2994, %2965
  %2996 = fmul <2 x double> %2986, splat (double 3.000000e+00)
  %2997 = fmul <2 x double> %2996, %2974
  %2998 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2972, <2 x double> splat (double 2.000000e+00), <2 x double> %2997)
  %2999 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2986, <2 x double> %2998, <2 x double> %2970)
  %3000 = fdiv <2 x double> %2995, %2999
  %3001 = fsub <2 x double> %2986, %3000
  %3002 = select <2 x i1> %2988, <2 x double> %3001, <2 x double> %2986
  %3003 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3000)
  %3004 = fcmp oge <2 x double> %3003, %2976
  %3005 = and <2 x i1> %3004, %2988
  %3006 = bitcast <2 x i1> %3005 to i2
  %3007 = icmp eq i2 %3006, 0
  br i1 %3007, label %3037, label %3008, !llvm.loop !109

3008:                                             ; preds = %2991
  %3009 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3002, <2 x double> %2974, <2 x double> %2972)
  %3010 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3002, <2 x double> %3009, <2 x double> %2970)
  %3011 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3002, <2 x double> %3010, <2 x double> %2968)
  %3012 = fsub <2 x double> %3011, %2965
  %3013 = fmul <2 x double> %3002, splat (double 3.000000e+00)
  %3014 = fmul <2 x double> %3013, %2974
  %3015 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2972, <2 x double> splat (double 2.000000e+00), <2 x double> %3014)
  %3016 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3002, <2 x double> %3015, <2 x double> %2970)
  %3017 = fdiv <2 x double> %3012, %3016
  %3018 = fsub <2 x double> %3002, %3017
  %3019 = select <2 x i1> %3005, <2 x double> %3018, <2 x double> %3002
  %3020 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3017)
  %3021 = fcmp oge <2 x double> %3020, %2976
  %3022 = and <2 x i1> %3021, %3005
  %3023 = bitcast <2 x i1> %3022 to i2
  %3024 = icmp eq i2 %3023, 0
  br i1 %3024, label %3037, label %3025, !llvm.loop !109

3025:                                             ; preds = %3008
  %3026 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3019, <2 x double> %2974, <2 x double> %2972)
  %3027 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3019, <2 x double> %3026, <2 x double> %2970)
  %3028 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3019, <2 x double> %3027, <2 x double> %2968)
  %3029 = fsub <2 x double> %3028, %2965
  %3030 = fmul <2 x double> %3019, splat (double 3.000000e+00)
  %3031 = fmul <2 x double> %3030, %2974
  %3032 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2972, <2 x double> splat (double 2.000000e+00), <2 x double> %3031)
  %3033 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3019, <2 x double> %3032, <2 x double> %2970)
  %3034 = fdiv <2 x double> %3029, %3033
  %3035 = fsub <2 x double> %3019, %3034
  %3036 = select <2 x i1> %3022, <2 x double> %3035, <2 x double> %3019
  br label %3037

3037:                                             ; preds = %3025, %3008, %2991, %2964
  %3038 = phi <2 x double> [ %2986, %2964 ], [ %3002, %2991 ], [ %3019, %3008 ], [ %3036, %3025 ]
  %3039 = fmul <2 x double> %2975, splat (double 2.800000e-01)
  %3040 = fcmp ogt <2 x double> %3038, %3039
  %3041 = select <2 x i1> %3040, <2 x double> %3038, <2 x double> %3039
  %3042 = fcmp olt <2 x double> %3041, %2975
  %3043 = select <2 x i1> %3042, <2 x double> %3041, <2 x double> %2975
  %3044 = fcmp olt <2 x double> %2859, %2854
  %3045 = icmp eq <2 x i64> %2880, zeroinitializer
  %3046 = select <2 x i1> %3045, <2 x i1> splat (i1 true), <2 x i1> %3044
  %3047 = select <2 x i1> %3046, <2 x double> %2859, <2 x double> %2854
  %3048 = fsub <2 x double> %3043, %2966
  %3049 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3048)
  %3050 = select <2 x i1> %3045, <2 x double> %2878, <2 x double> %3049
  %3051 = select <2 x i1> %3045, <2 x double> %2966, <2 x double> %3043
  store <2 x double> %3051, ptr %2871, align 16, !tbaa !25
  %3052 = getelementptr inbounds nuw i8, ptr %2826, i64 752
  %3053 = load <2 x double>, ptr %3052, align 16, !tbaa !25
  %3054 = select <2 x i1> %3045, <2 x double> %3053, <2 x double> %2965
  store <2 x double> %3054, ptr %3052, align 16, !tbaa !25
  %3055 = getelementptr inbounds nuw i8, ptr %2826, i64 1680
  %3056 = load <2 x double>, ptr %3055, align 16, !tbaa !25
  %3057 = fmul <2 x double> %3056, splat (double 2.000000e+00)
  %3058 = getelementptr inbounds nuw i8, ptr %2826, i64 96
  %3059 = load <2 x double>, ptr %3058, align 16, !tbaa !25
  %3060 = getelementptr inbounds nuw i8, ptr %2826, i64 112
  %3061 = load <2 x double>, ptr %3060, align 16, !tbaa !25
  %3062 = getelementptr inbounds nuw i8, ptr %2826, i64 128
  %3063 = load <2 x double>, ptr %3062, align 16, !tbaa !25
  %3064 = fmul <2 x double> %2833, %3063
  %3065 = fmul <2 x double> %3064, splat (double 0x3FD5555555555555)
  %3066 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3061, <2 x double> splat (double 5.000000e-01), <2 x double> %3065)
  %3067 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2833, <2 x double> %3066, <2 x double> %3059)
  %3068 = fmul <2 x double> %2833, %3067
  %3069 = getelementptr inbounds nuw i8, ptr %2826, i64 192
  %3070 = load <2 x double>, ptr %3069, align 16, !tbaa !25
  %3071 = fneg <2 x double> %3070
  %3072 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3071, <2 x double> %2833, <2 x double> %3068)
  %3073 = fmul <2 x double> %3057, %3072
  %3074 = fsub <2 x double> %2869, %3073
  %3075 = select <2 x i1> %3045, <2 x double> %2869, <2 x double> %3074
  %3076 = fsub <2 x double> %2854, %3047
  br label %3077

3077:                                             ; preds = %2822, %3037
  %3078 = phi <2 x double> [ %2870, %2822 ], [ %3076, %3037 ]
  %3079 = phi <2 x double> [ %2859, %2822 ], [ %3047, %3037 ]
  %3080 = phi <2 x double> [ %2878, %2822 ], [ %3050, %3037 ]
  %3081 = phi <2 x double> [ %2869, %2822 ], [ %3075, %3037 ]
  store <2 x double> %3078, ptr %2872, align 16, !tbaa !25
  %3082 = getelementptr inbounds nuw i8, ptr %2826, i64 784
  store <2 x double> %3079, ptr %3082, align 16, !tbaa !25
  %3083 = getelementptr inbounds nuw i8, ptr %2826, i64 816
  store <2 x double> %2851, ptr %3083, align 16, !tbaa !25
  %3084 = getelementptr inbounds nuw i8, ptr %2826, i64 864
  store <2 x double> %2828, ptr %3084, align 16, !tbaa !25
  %3085 = getelementptr inbounds nuw i8, ptr %2826, i64 880
  store <2 x double> %2833, ptr %3085, align 16, !tbaa !25
  %3086 = getelementptr inbounds nuw i8, ptr %2826, i64 1744
  %3087 = load <2 x double>, ptr %3086, align 16, !tbaa !25
  %3088 = getelementptr inbounds nuw i8, ptr %2826, i64 1760
  %3089 = load <2 x double>, ptr %3088, align 16, !tbaa !25
  %3090 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3087, <2 x double> %2833, <2 x double> %3089)
  %3091 = getelementptr inbounds nuw i8, ptr %2826, i64 1584
  %3092 = load <2 x double>, ptr %3091, align 16, !tbaa !25
  %3093 = getelementptr inbounds nuw i8, ptr %2826, i64 1024
  %3094 = load <2 x double>, ptr %3093, align 16, !tbaa !25
  %3095 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2841, <2 x double> %3094, <2 x double> %3092)
  %3096 = getelementptr inbounds nuw i8, ptr %2826, i64 1216
  %3097 = load <2 x double>, ptr %3096, align 16, !tbaa !25
  %3098 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2847, <2 x double> %3097, <2 x double> %3095)
  %3099 = fdiv <2 x double> %3098, %2850
  %3100 = getelementptr inbounds nuw i8, ptr %2826, i64 832
  store <2 x double> %3099, ptr %3100, align 16, !tbaa !25
  %3101 = getelementptr inbounds nuw i8, ptr %2826, i64 1040
  %3102 = load <2 x double>, ptr %3101, align 16, !tbaa !25
  %3103 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2841, <2 x double> %3102, <2 x double> %3081)
  %3104 = getelementptr inbounds nuw i8, ptr %2826, i64 1232
  %3105 = load <2 x double>, ptr %3104, align 16, !tbaa !25
  %3106 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2847, <2 x double> %3105, <2 x double> %3103)
  %3107 = fdiv <2 x double> %3106, %2850
  %3108 = getelementptr inbounds nuw i8, ptr %2826, i64 848
  store <2 x double> %3107, ptr %3108, align 16, !tbaa !25
  %3109 = getelementptr inbounds nuw i8, ptr %2826, i64 1088
  %3110 = load <2 x double>, ptr %3109, align 16, !tbaa !25
  %3111 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2841, <2 x double> %3110, <2 x double> %3090)
  %3112 = getelementptr inbounds nuw i8, ptr %2826, i64 1280
  %3113 = load <2 x double>, ptr %3112, align 16, !tbaa !25
  %3114 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2847, <2 x double> %3113, <2 x double> %3111)
  %3115 = fdiv <2 x double> %3114, %2850
  %3116 = getelementptr inbounds nuw i8, ptr %2826, i64 896
  store <2 x double> %3115, ptr %3116, align 16, !tbaa !25
  %3117 = fcmp ogt <2 x double> %2824, %3080
  %3118 = select <2 x i1> %3117, <2 x double> %2824, <2 x double> %3080
  %3119 = add nuw nsw i64 %2823, 1
  %3120 = load i64, ptr %140, align 16, !tbaa !16
  %3121 = icmp slt i64 %3119, %3120
  br i1 %3121, label %2822, label %3122, !llvm.loop !110

3122:                                             ; preds = %3077, %2637
  %3123 = phi i64 [ %2641, %2637 ], [ %3120, %3077 ]
  %3124 = phi <2 x double> [ zeroinitializer, %2637 ], [ %3118, %3077 ]
  %3125 = load <2 x double>, ptr %165, align 16, !tbaa !25
  %3126 = fadd <2 x double> %3125, splat (double 1.000000e+00)
  store <2 x double> %3126, ptr %165, align 16, !tbaa !25
  %3127 = load <2 x i64>, ptr %122, align 16, !tbaa !25
  %3128 = load <2 x double>, ptr %209, align 16, !tbaa !25
  %3129 = fcmp olt <2 x double> %3124, %3128
  %3130 = load i64, ptr %210, align 8, !tbaa !23
  %3131 = sitofp i64 %3130 to double
  %3132 = insertelement <2 x double> poison, double %3131, i64 0
  %3133 = shufflevector <2 x double> %3132, <2 x double> poison, <2 x i32> zeroinitializer
  %3134 = fcmp oge <2 x double> %3126, %3133
  %3135 = or <2 x i1> %3129, %3134
  %3136 = select <2 x i1> %3135, <2 x i64> %3127, <2 x i64> zeroinitializer
  store <2 x i64> %3136, ptr %145, align 16, !tbaa !25
  %3137 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3136)
  %3138 = icmp eq i64 %3137, 0
  br i1 %3138, label %525, label %3139, !llvm.loop !53

3139:                                             ; preds = %3122
  %3140 = icmp sgt i64 %3123, 0
  br i1 %3140, label %3141, label %3143

3141:                                             ; preds = %3139
  %3142 = icmp eq <2 x i64> %3136, zeroinitializer
  br label %3489

3143:                                             ; preds = %3537, %3139
  %3144 = phi i64 [ %3123, %3139 ], [ %3543, %3537 ]
  %3145 = load <2 x double>, ptr %211, align 16, !tbaa !25
  %3146 = fadd <2 x double> %3145, splat (double 1.000000e+00)
  %3147 = icmp eq <2 x i64> %3136, zeroinitializer
  %3148 = select <2 x i1> %3147, <2 x double> %3145, <2 x double> %3146
  store <2 x double> %3148, ptr %211, align 16, !tbaa !25
  %3149 = fcmp ogt <2 x double> %3148, splat (double 4.000000e+01)
  %3150 = select <2 x i1> %3149, <2 x i64> %3136, <2 x i64> zeroinitializer
  %3151 = xor <2 x i64> %3150, %3136
  %3152 = load <2 x double>, ptr %139, align 16, !tbaa !25
  %3153 = fadd <2 x double> %3152, splat (double 1.000000e+00)
  %3154 = icmp eq <2 x i64> %3150, zeroinitializer
  %3155 = select <2 x i1> %3154, <2 x double> %3152, <2 x double> %3153
  store <2 x double> %3155, ptr %139, align 16, !tbaa !25
  %3156 = load <2 x double>, ptr %194, align 16, !tbaa !25
  %3157 = load <2 x double>, ptr %212, align 16, !tbaa !25
  %3158 = fsub <2 x double> %3156, %3157
  %3159 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3158)
  %3160 = load <2 x double>, ptr %213, align 16, !tbaa !25
  %3161 = fmul <2 x double> %3160, splat (double 1.500000e+00)
  %3162 = fcmp ogt <2 x double> %3159, %3161
  %3163 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %3164 = fcmp ogt <2 x double> %3163, splat (double 2.000000e-03)
  %3165 = load <2 x double>, ptr %169, align 16, !tbaa !25
  %3166 = fcmp oeq <2 x double> %3165, zeroinitializer
  %3167 = and <2 x i1> %3162, %3166
  %3168 = and <2 x i1> %3164, %3167
  %3169 = fdiv <2 x double> %3160, %3159
  %3170 = select <2 x i1> %3168, <2 x i64> %3151, <2 x i64> zeroinitializer
  %3171 = load <2 x double>, ptr %154, align 16, !tbaa !25
  %3172 = icmp eq <2 x i64> %3170, zeroinitializer
  %3173 = select <2 x i1> %3172, <2 x double> %3171, <2 x double> zeroinitializer
  store <2 x double> %3173, ptr %154, align 16, !tbaa !25
  %3174 = fcmp ogt <2 x double> %3169, splat (double 5.000000e-02)
  %3175 = select <2 x i1> %3174, <2 x double> %3169, <2 x double> splat (double 5.000000e-02)
  %3176 = fcmp olt <2 x double> %3175, splat (double 0x3FEE666666666666)
  %3177 = select <2 x i1> %3176, <2 x double> %3175, <2 x double> splat (double 0x3FEE666666666666)
  %3178 = fmul <2 x double> %3163, %3177
  %3179 = fcmp ogt <2 x double> %3178, splat (double 0x3EB0C6F7A0B5ED8D)
  %3180 = select <2 x i1> %3179, <2 x double> %3178, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3181 = load <2 x double>, ptr %146, align 16, !tbaa !25
  %3182 = select <2 x i1> %3172, <2 x double> %3181, <2 x double> %3180
  store <2 x double> %3182, ptr %146, align 16, !tbaa !25
  %3183 = load <2 x double>, ptr %136, align 16, !tbaa !25
  %3184 = fadd <2 x double> %3183, splat (double 1.000000e+00)
  %3185 = select <2 x i1> %3172, <2 x double> %3183, <2 x double> %3184
  store <2 x double> %3185, ptr %136, align 16, !tbaa !25
  %3186 = xor <2 x i64> %3170, %3151
  %3187 = icmp sgt i64 %3144, 0
  br i1 %3187, label %3188, label %3330

3188:                                             ; preds = %3143
  %3189 = load ptr, ptr %141, align 8, !tbaa !27
  %3190 = fcmp ogt <2 x double> %3163, splat (double 0x3E7AD7F29ABCAF48)
  %3191 = fmul <2 x double> %3163, splat (double 3.000000e-01)
  %3192 = fcmp ogt <2 x double> %3191, splat (double 0x3EB0C6F7A0B5ED8D)
  %3193 = select <2 x i1> %3192, <2 x double> %3191, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3194 = fcmp ogt <2 x double> %3163, splat (double 1.000000e-05)
  br label %3198

3195:                                             ; preds = %3198
  %3196 = load ptr, ptr %141, align 8, !tbaa !27
  %3197 = fcmp ogt <2 x double> %3163, splat (double 1.000000e-04)
  br label %3258

3198:                                             ; preds = %3188, %3198
  %3199 = phi <2 x double> [ %3185, %3188 ], [ %3254, %3198 ]
  %3200 = phi <2 x double> [ %3182, %3188 ], [ %3252, %3198 ]
  %3201 = phi <2 x double> [ %3173, %3188 ], [ %3244, %3198 ]
  %3202 = phi i64 [ 0, %3188 ], [ %3256, %3198 ]
  %3203 = phi <2 x i64> [ %3186, %3188 ], [ %3255, %3198 ]
  %3204 = getelementptr inbounds nuw %struct.Piece, ptr %3189, i64 %3202
  %3205 = getelementptr inbounds nuw i8, ptr %3204, i64 768
  %3206 = load <2 x double>, ptr %3205, align 16, !tbaa !25
  %3207 = getelementptr inbounds nuw i8, ptr %3204, i64 960
  %3208 = load <2 x double>, ptr %3207, align 16, !tbaa !25
  %3209 = getelementptr inbounds nuw i8, ptr %3204, i64 1840
  %3210 = load <2 x i64>, ptr %3209, align 16, !tbaa !25
  %3211 = xor <2 x i64> %3210, splat (i64 -1)
  %3212 = getelementptr inbounds nuw i8, ptr %3204, i64 224
  %3213 = load <2 x double>, ptr %3212, align 16, !tbaa !25
  %3214 = fmul <2 x double> %3213, splat (double 1.000000e-04)
  %3215 = fcmp ogt <2 x double> %3214, splat (double 0x3E7AD7F29ABCAF48)
  %3216 = fneg <2 x double> %3214
  %3217 = select <2 x i1> %3215, <2 x double> %3216, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3218 = fcmp olt <2 x double> %3206, %3217
  %3219 = select <2 x i1> %3218, <2 x i64> %3211, <2 x i64> zeroinitializer
  %3220 = fcmp ole <2 x double> %3208, zeroinitializer
  %3221 = select <2 x i1> %3220, <2 x i64> %3219, <2 x i64> zeroinitializer
  %3222 = getelementptr inbounds nuw i8, ptr %3204, i64 208
  %3223 = load <2 x double>, ptr %3222, align 16, !tbaa !25
  %3224 = fmul <2 x double> %3223, splat (double -3.000000e-07)
  %3225 = fcmp olt <2 x double> %3206, %3224
  %3226 = select <2 x i1> %3190, <2 x i1> %3225, <2 x i1> zeroinitializer
  %3227 = select <2 x i1> %3226, <2 x i64> %3221, <2 x i64> zeroinitializer
  %3228 = and <2 x i64> %3227, %3203
  %3229 = icmp eq <2 x i64> %3228, zeroinitializer
  %3230 = select <2 x i1> %3229, <2 x double> %3201, <2 x double> zeroinitializer
  %3231 = select <2 x i1> %3229, <2 x double> %3200, <2 x double> %3193
  %3232 = fadd <2 x double> %3199, splat (double 1.000000e+00)
  %3233 = select <2 x i1> %3229, <2 x double> %3199, <2 x double> %3232
  %3234 = xor <2 x i64> %3228, %3203
  %3235 = xor <2 x i64> %3221, splat (i64 -1)
  %3236 = and <2 x i64> %3219, %3235
  %3237 = select <2 x i1> %3194, <2 x i64> %3236, <2 x i64> zeroinitializer
  %3238 = fsub <2 x double> %3208, %3206
  %3239 = fdiv <2 x double> %3208, %3238
  %3240 = fcmp ogt <2 x double> %3230, %3163
  %3241 = and <2 x i64> %3234, %3237
  %3242 = icmp eq <2 x i64> %3241, zeroinitializer
  %3243 = select <2 x i1> %3242, <2 x i1> splat (i1 true), <2 x i1> %3240
  %3244 = select <2 x i1> %3243, <2 x double> %3230, <2 x double> %3163
  store <2 x double> %3244, ptr %154, align 16, !tbaa !25
  %3245 = fcmp ogt <2 x double> %3239, splat (double 5.000000e-02)
  %3246 = select <2 x i1> %3245, <2 x double> %3239, <2 x double> splat (double 5.000000e-02)
  %3247 = fcmp olt <2 x double> %3246, splat (double 0x3FEE666666666666)
  %3248 = select <2 x i1> %3247, <2 x double> %3246, <2 x double> splat (double 0x3FEE666666666666)
  %3249 = fmul <2 x double> %3163, %3248
  %3250 = fcmp ogt <2 x double> %3249, splat (double 0x3EB0C6F7A0B5ED8D)
  %3251 = select <2 x i1> %3250, <2 x double> %3249, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3252 = select <2 x i1> %3242, <2 x double> %3231, <2 x double> %3251
  store <2 x double> %3252, ptr %146, align 16, !tbaa !25
  %3253 = fadd <2 x double> %3233, splat (double 1.000000e+00)
  %3254 = select <2 x i1> %3242, <2 x double> %3233, <2 x double> %3253
  store <2 x double> %3254, ptr %136, align 16, !tbaa !25
  %3255 = xor <2 x i64> %3241, %3234
  %3256 = add nuw nsw i64 %3202, 1
  %3257 = icmp eq i64 %3256, %3144
  br i1 %3257, label %3195, label %3198, !llvm.loop !111

3258:                                             ; preds = %3195, %3258
  %3259 = phi <2 x double> [ %3254, %3195 ], [ %3326, %3258 ]
  %3260 = phi <2 x double> [ %3252, %3195 ], [ %3324, %3258 ]
  %3261 = phi <2 x double> [ %3244, %3195 ], [ %3316, %3258 ]
  %3262 = phi i64 [ 0, %3195 ], [ %3328, %3258 ]
  %3263 = phi <2 x i64> [ %3255, %3195 ], [ %3327, %3258 ]
  %3264 = getelementptr inbounds nuw %struct.Piece, ptr %3196, i64 %3262
  %3265 = getelementptr inbounds nuw i8, ptr %3264, i64 944
  %3266 = load <2 x double>, ptr %3265, align 16, !tbaa !25
  %3267 = getelementptr inbounds nuw i8, ptr %3264, i64 752
  %3268 = load <2 x double>, ptr %3267, align 16, !tbaa !25
  %3269 = getelementptr inbounds nuw i8, ptr %3264, i64 1824
  %3270 = load <2 x double>, ptr %3269, align 16, !tbaa !25
  %3271 = fcmp oeq <2 x double> %3270, zeroinitializer
  %3272 = getelementptr inbounds nuw i8, ptr %3264, i64 368
  %3273 = load <2 x double>, ptr %3272, align 16, !tbaa !25
  %3274 = fmul <2 x double> %3273, splat (double 0x3FEFF7CED916872B)
  %3275 = fcmp olt <2 x double> %3268, %3274
  %3276 = and <2 x i1> %3271, %3275
  %3277 = and <2 x i1> %3197, %3276
  %3278 = fsub <2 x double> %3266, %3273
  %3279 = fsub <2 x double> %3266, %3268
  %3280 = fdiv <2 x double> %3278, %3279
  %3281 = fcmp ogt <2 x double> %3261, %3163
  %3282 = select <2 x i1> %3277, <2 x i64> %3263, <2 x i64> zeroinitializer
  %3283 = icmp eq <2 x i64> %3282, zeroinitializer
  %3284 = select <2 x i1> %3283, <2 x i1> splat (i1 true), <2 x i1> %3281
  %3285 = select <2 x i1> %3284, <2 x double> %3261, <2 x double> %3163
  store <2 x double> %3285, ptr %154, align 16, !tbaa !25
  %3286 = fcmp ogt <2 x double> %3280, splat (double 5.000000e-02)
  %3287 = select <2 x i1> %3286, <2 x double> %3280, <2 x double> splat (double 5.000000e-02)
  %3288 = fcmp olt <2 x double> %3287, splat (double 0x3FEE666666666666)
  %3289 = select <2 x i1> %3288, <2 x double> %3287, <2 x double> splat (double 0x3FEE666666666666)
  %3290 = fmul <2 x double> %3163, %3289
  %3291 = fcmp ogt <2 x double> %3290, splat (double 0x3EB0C6F7A0B5ED8D)
  %3292 = select <2 x i1> %3291, <2 x double> %3290, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3293 = select <2 x i1> %3283, <2 x double> %3260, <2 x double> %3292
  store <2 x double> %3293, ptr %146, align 16, !tbaa !25
  %3294 = fadd <2 x double> %3259, splat (double 1.000000e+00)
  %3295 = select <2 x i1> %3283, <2 x double> %3259, <2 x double> %3294
  store <2 x double> %3295, ptr %136, align 16, !tbaa !25
  %3296 = xor <2 x i64> %3282, %3263
  %3297 = load <2 x double>, ptr %3269, align 16, !tbaa !25
  %3298 = fcmp oeq <2 x double> %3297, splat (double 1.000000e+00)
  %3299 = getelementptr inbounds nuw i8, ptr %3264, i64 816
  %3300 = load <2 x double>, ptr %3299, align 16, !tbaa !25
  %3301 = getelementptr inbounds nuw i8, ptr %3264, i64 400
  %3302 = load <2 x double>, ptr %3301, align 16, !tbaa !25
  %3303 = fmul <2 x double> %3302, splat (double 1.000100e+00)
  %3304 = fcmp ogt <2 x double> %3300, %3303
  %3305 = and <2 x i1> %3298, %3304
  %3306 = and <2 x i1> %3197, %3305
  %3307 = getelementptr inbounds nuw i8, ptr %3264, i64 1008
  %3308 = load <2 x double>, ptr %3307, align 16, !tbaa !25
  %3309 = fsub <2 x double> %3302, %3308
  %3310 = fsub <2 x double> %3300, %3308
  %3311 = fdiv <2 x double> %3309, %3310
  %3312 = fcmp ogt <2 x double> %3285, %3163
  %3313 = select <2 x i1> %3306, <2 x i64> %3296, <2 x i64> zeroinitializer
  %3314 = icmp eq <2 x i64> %3313, zeroinitializer
  %3315 = select <2 x i1> %3314, <2 x i1> splat (i1 true), <2 x i1> %3312
  %3316 = select <2 x i1> %3315, <2 x double> %3285, <2 x double> %3163
  store <2 x double> %3316, ptr %154, align 16, !tbaa !25
  %3317 = fcmp ogt <2 x double> %3311, splat (double 5.000000e-02)
  %3318 = select <2 x i1> %3317, <2 x double> %3311, <2 x double> splat (double 5.000000e-02)
  %3319 = fcmp olt <2 x double> %3318, splat (double 0x3FEE666666666666)
  %3320 = select <2 x i1> %3319, <2 x double> %3318, <2 x double> splat (double 0x3FEE666666666666)
  %3321 = fmul <2 x double> %3163, %3320
  %3322 = fcmp ogt <2 x double> %3321, splat (double 0x3EB0C6F7A0B5ED8D)
  %3323 = select <2 x i1> %3322, <2 x double> %3321, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3324 = select <2 x i1> %3314, <2 x double> %3293, <2 x double> %3323
  store <2 x double> %3324, ptr %146, align 16, !tbaa !25
  %3325 = fadd <2 x double> %3295, splat (double 1.000000e+00)
  %3326 = select <2 x i1> %3314, <2 x double> %3295, <2 x double> %3325
  store <2 x double> %3326, ptr %136, align 16, !tbaa !25
  %3327 = xor <2 x i64> %3313, %3296
  %3328 = add nuw nsw i64 %3262, 1
  %3329 = icmp eq i64 %3328, %3144
  br i1 %3329, label %3330, label %3258, !llvm.loop !112

3330:                                             ; preds = %3258, %3143
  %3331 = phi <2 x double> [ %3185, %3143 ], [ %3326, %3258 ]
  %3332 = phi <2 x double> [ %3182, %3143 ], [ %3324, %3258 ]
  %3333 = phi <2 x double> [ %3173, %3143 ], [ %3316, %3258 ]
  %3334 = phi <2 x i64> [ %3186, %3143 ], [ %3327, %3258 ]
  %3335 = load <2 x double>, ptr %214, align 16, !tbaa !25
  %3336 = fmul <2 x double> %3335, splat (double 5.000000e-01)
  %3337 = load <2 x double>, ptr %197, align 16, !tbaa !25
  %3338 = load <2 x i64>, ptr %199, align 16, !tbaa !25
  %3339 = fneg <2 x double> %3336
  %3340 = icmp eq <2 x i64> %3338, zeroinitializer
  %3341 = select <2 x i1> %3340, <2 x double> %3339, <2 x double> %3336
  %3342 = fadd <2 x double> %3337, %3341
  %3343 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %3344 = fsub <2 x double> %3343, %3342
  %3345 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %3346 = fsub <2 x double> %3345, %3342
  %3347 = fneg <2 x double> %3344
  %3348 = select <2 x i1> %3340, <2 x double> %3347, <2 x double> %3344
  %3349 = fneg <2 x double> %3346
  %3350 = select <2 x i1> %3340, <2 x double> %3349, <2 x double> %3346
  %3351 = load <2 x double>, ptr %164, align 16, !tbaa !25
  %3352 = fcmp oeq <2 x double> %3351, zeroinitializer
  %3353 = load <2 x double>, ptr %196, align 16, !tbaa !25
  %3354 = fcmp oeq <2 x double> %3353, zeroinitializer
  %3355 = and <2 x i1> %3352, %3354
  %3356 = fcmp olt <2 x double> %3348, splat (double -1.000000e-03)
  %3357 = and <2 x i1> %3355, %3356
  %3358 = fcmp ogt <2 x double> %3350, splat (double 4.000000e-03)
  %3359 = and <2 x i1> %3358, %3357
  %3360 = and <2 x i1> %3164, %3359
  %3361 = fsub <2 x double> %3348, %3350
  %3362 = fdiv <2 x double> %3348, %3361
  %3363 = fcmp ogt <2 x double> %3333, %3163
  %3364 = select <2 x i1> %3360, <2 x i64> %3334, <2 x i64> zeroinitializer
  %3365 = icmp eq <2 x i64> %3364, zeroinitializer
  %3366 = select <2 x i1> %3365, <2 x i1> splat (i1 true), <2 x i1> %3363
  %3367 = select <2 x i1> %3366, <2 x double> %3333, <2 x double> %3163
  store <2 x double> %3367, ptr %154, align 16, !tbaa !25
  %3368 = fcmp ogt <2 x double> %3362, splat (double 5.000000e-02)
  %3369 = select <2 x i1> %3368, <2 x double> %3362, <2 x double> splat (double 5.000000e-02)
  %3370 = fcmp olt <2 x double> %3369, splat (double 0x3FEE666666666666)
  %3371 = select <2 x i1> %3370, <2 x double> %3369, <2 x double> splat (double 0x3FEE666666666666)
  %3372 = fmul <2 x double> %3163, %3371
  %3373 = fcmp ogt <2 x double> %3372, splat (double 0x3EB0C6F7A0B5ED8D)
  %3374 = select <2 x i1> %3373, <2 x double> %3372, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3375 = select <2 x i1> %3365, <2 x double> %3332, <2 x double> %3374
  store <2 x double> %3375, ptr %146, align 16, !tbaa !25
  %3376 = fadd <2 x double> %3331, splat (double 1.000000e+00)
  %3377 = select <2 x i1> %3365, <2 x double> %3331, <2 x double> %3376
  store <2 x double> %3377, ptr %136, align 16, !tbaa !25
  %3378 = xor <2 x i64> %3364, %3334
  %3379 = load <2 x double>, ptr %215, align 16, !tbaa !25
  %3380 = load <2 x double>, ptr %182, align 16, !tbaa !25
  %3381 = load <2 x double>, ptr %173, align 16, !tbaa !25
  %3382 = fsub <2 x double> %3380, %3381
  %3383 = load <2 x double>, ptr %216, align 16, !tbaa !25
  %3384 = fcmp une <2 x double> %3383, splat (double 1.000000e+00)
  %3385 = load <2 x double>, ptr %217, align 16, !tbaa !25
  %3386 = fsub <2 x double> %3343, %3385
  %3387 = select <2 x i1> %3384, <2 x double> splat (double -1.000000e+00), <2 x double> %3386
  %3388 = fcmp une <2 x double> %3383, splat (double 2.000000e+00)
  %3389 = fsub <2 x double> %3379, %3385
  %3390 = select <2 x i1> %3388, <2 x double> %3387, <2 x double> %3389
  %3391 = fcmp une <2 x double> %3383, splat (double 3.000000e+00)
  %3392 = fsub <2 x double> %3382, %3385
  %3393 = select <2 x i1> %3391, <2 x double> %3390, <2 x double> %3392
  %3394 = fcmp une <2 x double> %3383, splat (double 4.000000e+00)
  %3395 = fsub <2 x double> %3385, %3382
  %3396 = select <2 x i1> %3394, <2 x double> %3393, <2 x double> %3395
  br i1 %3187, label %3397, label %3445

3397:                                             ; preds = %3330
  %3398 = load ptr, ptr %141, align 8, !tbaa !27
  %3399 = and i64 %3144, 3
  %3400 = icmp ult i64 %3144, 4
  br i1 %3400, label %3429, label %3401

3401:                                             ; preds = %3397
  %3402 = and i64 %3144, 9223372036854775804
  br label %3403

3403:                                             ; preds = %3403, %3401
  %3404 = phi i64 [ 0, %3401 ], [ %3426, %3403 ]
  %3405 = phi <2 x double> [ splat (double 1.000000e+09), %3401 ], [ %3425, %3403 ]
  %3406 = phi i64 [ 0, %3401 ], [ %3427, %3403 ]
  %3407 = getelementptr inbounds nuw %struct.Piece, ptr %3398, i64 %3404, i32 35
  %3408 = load <2 x double>, ptr %3407, align 16, !tbaa !25
  %3409 = fcmp olt <2 x double> %3405, %3408
  %3410 = select <2 x i1> %3409, <2 x double> %3405, <2 x double> %3408
  %3411 = or disjoint i64 %3404, 1
  %3412 = getelementptr inbounds nuw %struct.Piece, ptr %3398, i64 %3411, i32 35
  %3413 = load <2 x double>, ptr %3412, align 16, !tbaa !25
  %3414 = fcmp olt <2 x double> %3410, %3413
  %3415 = select <2 x i1> %3414, <2 x double> %3410, <2 x double> %3413
  %3416 = or disjoint i64 %3404, 2
  %3417 = getelementptr inbounds nuw %struct.Piece, ptr %3398, i64 %3416, i32 35
  %3418 = load <2 x double>, ptr %3417, align 16, !tbaa !25
  %3419 = fcmp olt <2 x double> %3415, %3418
  %3420 = select <2 x i1> %3419, <2 x double> %3415, <2 x double> %3418
  %3421 = or disjoint i64 %3404, 3
  %3422 = getelementptr inbounds nuw %struct.Piece, ptr %3398, i64 %3421, i32 35
  %3423 = load <2 x double>, ptr %3422, align 16, !tbaa !25
  %3424 = fcmp olt <2 x double> %3420, %3423
  %3425 = select <2 x i1> %3424, <2 x double> %3420, <2 x double> %3423
  %3426 = add nuw nsw i64 %3404, 4
  %3427 = add i64 %3406, 4
  %3428 = icmp eq i64 %3427, %3402
  br i1 %3428, label %3429, label %3403, !llvm.loop !113

3429:                                             ; preds = %3403, %3397
  %3430 = phi <2 x double> [ poison, %3397 ], [ %3425, %3403 ]
  %3431 = phi i64 [ 0, %3397 ], [ %3426, %3403 ]
  %3432 = phi <2 x double> [ splat (double 1.000000e+09), %3397 ], [ %3425, %3403 ]
  %3433 = icmp eq i64 %3399, 0
  br i1 %3433, label %3445, label %3434

3434:                                             ; preds = %3429, %3434
  %3435 = phi i64 [ %3442, %3434 ], [ %3431, %3429 ]
  %3436 = phi <2 x double> [ %3441, %3434 ], [ %3432, %3429 ]
  %3437 = phi i64 [ %3443, %3434 ], [ 0, %3429 ]
  %3438 = getelementptr inbounds nuw %struct.Piece, ptr %3398, i64 %3435, i32 35
  %3439 = load <2 x double>, ptr %3438, align 16, !tbaa !25
  %3440 = fcmp olt <2 x double> %3436, %3439
  %3441 = select <2 x i1> %3440, <2 x double> %3436, <2 x double> %3439
  %3442 = add nuw nsw i64 %3435, 1
  %3443 = add i64 %3437, 1
  %3444 = icmp eq i64 %3443, %3399
  br i1 %3444, label %3445, label %3434, !llvm.loop !114

3445:                                             ; preds = %3429, %3434, %3330
  %3446 = phi <2 x double> [ splat (double 1.000000e+09), %3330 ], [ %3430, %3429 ], [ %3441, %3434 ]
  %3447 = load <2 x double>, ptr %174, align 16, !tbaa !25
  %3448 = fsub <2 x double> %3447, %3381
  %3449 = fsub <2 x double> %3345, %3385
  %3450 = select <2 x i1> %3384, <2 x double> splat (double -1.000000e+00), <2 x double> %3449
  %3451 = fsub <2 x double> %3446, %3385
  %3452 = select <2 x i1> %3388, <2 x double> %3450, <2 x double> %3451
  %3453 = fsub <2 x double> %3448, %3385
  %3454 = select <2 x i1> %3391, <2 x double> %3452, <2 x double> %3453
  %3455 = fsub <2 x double> %3385, %3448
  %3456 = select <2 x i1> %3394, <2 x double> %3454, <2 x double> %3455
  %3457 = fcmp une <2 x double> %3383, zeroinitializer
  %3458 = fcmp oge <2 x double> %3163, splat (double 5.000000e-02)
  %3459 = and <2 x i1> %3458, %3457
  %3460 = fcmp olt <2 x double> %3396, zeroinitializer
  %3461 = and <2 x i1> %3459, %3460
  %3462 = fsub <2 x double> %3456, %3396
  %3463 = fmul <2 x double> %3462, splat (double 2.000000e-02)
  %3464 = fcmp ogt <2 x double> %3456, %3463
  %3465 = and <2 x i1> %3461, %3464
  %3466 = fsub <2 x double> %3396, %3456
  %3467 = fdiv <2 x double> %3396, %3466
  %3468 = fcmp olt <2 x double> %3467, splat (double 0x3FEE666666666666)
  %3469 = and <2 x i1> %3468, %3465
  %3470 = fcmp ogt <2 x double> %3367, %3163
  %3471 = select <2 x i1> %3469, <2 x i64> %3378, <2 x i64> zeroinitializer
  %3472 = icmp eq <2 x i64> %3471, zeroinitializer
  %3473 = select <2 x i1> %3472, <2 x i1> splat (i1 true), <2 x i1> %3470
  %3474 = select <2 x i1> %3473, <2 x double> %3367, <2 x double> %3163
  store <2 x double> %3474, ptr %154, align 16, !tbaa !25
  %3475 = fcmp ogt <2 x double> %3467, splat (double 5.000000e-02)
  %3476 = select <2 x i1> %3475, <2 x double> %3467, <2 x double> splat (double 5.000000e-02)
  %3477 = fcmp olt <2 x double> %3476, splat (double 0x3FEE666666666666)
  %3478 = select <2 x i1> %3477, <2 x double> %3476, <2 x double> splat (double 0x3FEE666666666666)
  %3479 = fmul <2 x double> %3163, %3478
  %3480 = fcmp ogt <2 x double> %3479, splat (double 0x3EB0C6F7A0B5ED8D)
  %3481 = select <2 x i1> %3480, <2 x double> %3479, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3482 = select <2 x i1> %3472, <2 x double> %3375, <2 x double> %3481
  store <2 x double> %3482, ptr %146, align 16, !tbaa !25
  %3483 = fadd <2 x double> %3377, splat (double 1.000000e+00)
  %3484 = select <2 x i1> %3472, <2 x double> %3377, <2 x double> %3483
  store <2 x double> %3484, ptr %136, align 16, !tbaa !25
  %3485 = xor <2 x i64> %3471, %3378
  %3486 = or <2 x i64> %3485, %3150
  %3487 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3486)
  %3488 = icmp eq i64 %3487, 0
  br i1 %3488, label %525, label %3545

3489:                                             ; preds = %3141, %3537
  %3490 = phi i64 [ 0, %3141 ], [ %3542, %3537 ]
  %3491 = load ptr, ptr %141, align 8, !tbaa !27
  %3492 = getelementptr inbounds nuw %struct.Piece, ptr %3491, i64 %3490
  %3493 = getelementptr inbounds nuw i8, ptr %3492, i64 1896
  %3494 = load ptr, ptr %3493, align 8, !tbaa !56
  %3495 = load <2 x double>, ptr %3494, align 16, !tbaa !25
  %3496 = getelementptr inbounds nuw i8, ptr %3492, i64 336
  %3497 = load <2 x double>, ptr %3496, align 16, !tbaa !25
  %3498 = getelementptr inbounds nuw i8, ptr %3494, i64 16
  %3499 = load <2 x double>, ptr %3498, align 16, !tbaa !25
  %3500 = fsub <2 x double> %3499, %3495
  %3501 = fneg <2 x double> %3497
  %3502 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3501, <2 x double> %3500, <2 x double> %3495)
  %3503 = getelementptr inbounds nuw i8, ptr %3492, i64 1888
  %3504 = load i64, ptr %3503, align 16, !tbaa !30
  %3505 = icmp eq i64 %3504, 0
  br i1 %3505, label %3537, label %3506

3506:                                             ; preds = %3489
  %3507 = getelementptr <2 x double>, ptr %3494, i64 %3504
  %3508 = getelementptr i8, ptr %3507, i64 -16
  %3509 = load <2 x double>, ptr %3508, align 16, !tbaa !25
  %3510 = load <2 x double>, ptr %3507, align 16, !tbaa !25
  %3511 = getelementptr inbounds nuw i8, ptr %3492, i64 720
  %3512 = load <2 x double>, ptr %3511, align 16, !tbaa !25
  %3513 = getelementptr inbounds nuw i8, ptr %3492, i64 736
  %3514 = load <2 x double>, ptr %3513, align 16, !tbaa !25
  %3515 = getelementptr inbounds nuw i8, ptr %3492, i64 16
  %3516 = load <2 x double>, ptr %3515, align 16, !tbaa !25
  %3517 = fsub <2 x double> %3514, %3516
  %3518 = fmul <2 x double> %3512, %3517
  %3519 = getelementptr inbounds nuw i8, ptr %3492, i64 144
  %3520 = load <2 x double>, ptr %3519, align 16, !tbaa !25
  %3521 = getelementptr inbounds nuw i8, ptr %3492, i64 704
  %3522 = load <2 x double>, ptr %3521, align 16, !tbaa !25
  %3523 = fdiv <2 x double> %3520, %3522
  %3524 = getelementptr inbounds nuw i8, ptr %3492, i64 48
  %3525 = load <2 x double>, ptr %3524, align 16, !tbaa !25
  %3526 = getelementptr inbounds nuw i8, ptr %3492, i64 64
  %3527 = load <2 x double>, ptr %3526, align 16, !tbaa !25
  %3528 = getelementptr inbounds nuw i8, ptr %3492, i64 80
  %3529 = load <2 x double>, ptr %3528, align 16, !tbaa !25
  %3530 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3510, <2 x double> %3529, <2 x double> %3527)
  %3531 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3510, <2 x double> %3530, <2 x double> %3525)
  %3532 = fdiv <2 x double> %3531, %3518
  %3533 = fmul <2 x double> %3510, %3532
  %3534 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3523, <2 x double> %3509, <2 x double> %3533)
  %3535 = fadd <2 x double> %3523, %3532
  %3536 = fdiv <2 x double> %3534, %3535
  br label %3537

3537:                                             ; preds = %3489, %3506
  %3538 = phi <2 x double> [ %3536, %3506 ], [ %3502, %3489 ]
  %3539 = getelementptr inbounds nuw i8, ptr %3492, i64 1808
  %3540 = load <2 x double>, ptr %3539, align 16, !tbaa !25
  %3541 = select <2 x i1> %3142, <2 x double> %3540, <2 x double> %3538
  store <2 x double> %3541, ptr %3539, align 16, !tbaa !25
  %3542 = add nuw nsw i64 %3490, 1
  %3543 = load i64, ptr %140, align 16, !tbaa !16
  %3544 = icmp slt i64 %3542, %3543
  br i1 %3544, label %3489, label %3143, !llvm.loop !116

3545:                                             ; preds = %3445
  %3546 = icmp eq <2 x i64> %3486, zeroinitializer
  %3547 = select <2 x i1> %3546, <2 x double> %3157, <2 x double> %3156
  store <2 x double> %3547, ptr %212, align 16, !tbaa !25
  %3548 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %3549 = select <2 x i1> %3546, <2 x double> %3548, <2 x double> %3343
  store <2 x double> %3549, ptr %163, align 16, !tbaa !25
  %3550 = select <2 x i1> %3546, <2 x double> %3343, <2 x double> %3345
  store <2 x double> %3550, ptr %162, align 16, !tbaa !25
  %3551 = load <2 x double>, ptr %244, align 16, !tbaa !25
  %3552 = select <2 x i1> %3546, <2 x double> %3551, <2 x double> %3380
  store <2 x double> %3552, ptr %244, align 16, !tbaa !25
  %3553 = select <2 x i1> %3546, <2 x double> %3380, <2 x double> %3447
  store <2 x double> %3553, ptr %245, align 16, !tbaa !25
  %3554 = load <2 x double>, ptr %247, align 16, !tbaa !25
  %3555 = load <2 x double>, ptr %246, align 16, !tbaa !25
  %3556 = select <2 x i1> %3546, <2 x double> %3555, <2 x double> %3554
  store <2 x double> %3556, ptr %246, align 16, !tbaa !25
  %3557 = load <2 x double>, ptr %248, align 16, !tbaa !25
  %3558 = select <2 x i1> %3546, <2 x double> %3554, <2 x double> %3557
  store <2 x double> %3558, ptr %247, align 16, !tbaa !25
  %3559 = load <2 x double>, ptr %250, align 16, !tbaa !25
  %3560 = load <2 x double>, ptr %249, align 16, !tbaa !25
  %3561 = select <2 x i1> %3546, <2 x double> %3560, <2 x double> %3559
  store <2 x double> %3561, ptr %249, align 16, !tbaa !25
  %3562 = load <2 x double>, ptr %251, align 16, !tbaa !25
  %3563 = select <2 x i1> %3546, <2 x double> %3559, <2 x double> %3562
  store <2 x double> %3563, ptr %250, align 16, !tbaa !25
  %3564 = load <2 x double>, ptr %253, align 16, !tbaa !25
  %3565 = load <2 x double>, ptr %252, align 16, !tbaa !25
  %3566 = select <2 x i1> %3546, <2 x double> %3565, <2 x double> %3564
  store <2 x double> %3566, ptr %252, align 16, !tbaa !25
  %3567 = load <2 x double>, ptr %254, align 16, !tbaa !25
  %3568 = select <2 x i1> %3546, <2 x double> %3564, <2 x double> %3567
  store <2 x double> %3568, ptr %253, align 16, !tbaa !25
  %3569 = load <2 x double>, ptr %256, align 16, !tbaa !25
  %3570 = load <2 x double>, ptr %255, align 16, !tbaa !25
  %3571 = select <2 x i1> %3546, <2 x double> %3570, <2 x double> %3569
  store <2 x double> %3571, ptr %255, align 16, !tbaa !25
  %3572 = load <2 x double>, ptr %257, align 16, !tbaa !25
  %3573 = select <2 x i1> %3546, <2 x double> %3569, <2 x double> %3572
  store <2 x double> %3573, ptr %256, align 16, !tbaa !25
  %3574 = xor <2 x i64> %3486, splat (i64 -1)
  br i1 %3187, label %3575, label %3959

3575:                                             ; preds = %3545, %3915
  %3576 = phi i64 [ %3927, %3915 ], [ 0, %3545 ]
  %3577 = load ptr, ptr %141, align 8, !tbaa !27
  %3578 = getelementptr inbounds nuw %struct.Piece, ptr %3577, i64 %3576
  %3579 = getelementptr inbounds nuw i8, ptr %3578, i64 416
  %3580 = load <2 x double>, ptr %3579, align 16, !tbaa !25
  %3581 = fcmp ogt <2 x double> %3580, zeroinitializer
  %3582 = bitcast <2 x i1> %3581 to i2
  %3583 = icmp eq i2 %3582, 0
  %3584 = load i64, ptr %131, align 8, !tbaa !20
  br i1 %3583, label %3842, label %3585

3585:                                             ; preds = %3575
  %3586 = add i64 %3584, -1
  %3587 = getelementptr inbounds nuw i8, ptr %3578, i64 1104
  %3588 = load <2 x double>, ptr %3587, align 16, !tbaa !25
  %3589 = getelementptr inbounds nuw i8, ptr %3578, i64 912
  %3590 = load <2 x double>, ptr %3589, align 16, !tbaa !25
  %3591 = getelementptr inbounds nuw i8, ptr %3578, i64 1888
  %3592 = load i64, ptr %3591, align 16, !tbaa !30
  %3593 = icmp sgt i64 %3584, %3592
  br i1 %3593, label %3602, label %3594

3594:                                             ; preds = %3585
  %3595 = getelementptr inbounds nuw i8, ptr %3578, i64 1984
  %3596 = load ptr, ptr %3595, align 16, !tbaa !66
  %3597 = getelementptr inbounds <2 x double>, ptr %3596, i64 %3586
  %3598 = load <2 x double>, ptr %3597, align 16, !tbaa !25
  %3599 = getelementptr inbounds nuw i8, ptr %3578, i64 384
  %3600 = load <2 x double>, ptr %3599, align 16, !tbaa !25
  %3601 = fmul <2 x double> %3598, %3600
  br label %3611

3602:                                             ; preds = %3585
  %3603 = getelementptr inbounds nuw i8, ptr %3578, i64 384
  %3604 = load <2 x double>, ptr %3603, align 16, !tbaa !25
  %3605 = getelementptr inbounds nuw i8, ptr %3578, i64 1984
  %3606 = load ptr, ptr %3605, align 16, !tbaa !66
  %3607 = getelementptr inbounds <2 x double>, ptr %3606, i64 %3586
  %3608 = load <2 x double>, ptr %3607, align 16, !tbaa !25
  %3609 = fsub <2 x double> %3588, %3604
  %3610 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3608, <2 x double> %3609, <2 x double> %3604)
  br label %3611

3611:                                             ; preds = %3602, %3594
  %3612 = phi <2 x double> [ %3600, %3594 ], [ %3604, %3602 ]
  %3613 = phi <2 x double> [ %3601, %3594 ], [ %3610, %3602 ]
  %3614 = getelementptr inbounds nuw i8, ptr %3578, i64 752
  %3615 = load <2 x double>, ptr %3614, align 16, !tbaa !25
  %3616 = fcmp ole <2 x double> %3613, %3615
  %3617 = getelementptr inbounds nuw i8, ptr %3578, i64 1824
  %3618 = load <2 x double>, ptr %3617, align 16, !tbaa !25
  %3619 = fcmp oeq <2 x double> %3618, zeroinitializer
  %3620 = select <2 x i1> %3619, <2 x i1> %3616, <2 x i1> zeroinitializer
  %3621 = select <2 x i1> %3620, <2 x i64> %3486, <2 x i64> zeroinitializer
  %3622 = xor <2 x i64> %3621, %3486
  %3623 = fsub <2 x double> %3588, %3590
  %3624 = getelementptr inbounds nuw i8, ptr %3578, i64 384
  %3625 = fsub <2 x double> %3590, %3612
  %3626 = fdiv <2 x double> %3623, %3625
  %3627 = getelementptr inbounds nuw i8, ptr %3578, i64 1928
  %3628 = load ptr, ptr %3627, align 8, !tbaa !59
  %3629 = getelementptr inbounds <2 x double>, ptr %3628, i64 %3592
  %3630 = load <2 x double>, ptr %3629, align 16, !tbaa !25
  %3631 = getelementptr inbounds nuw i8, ptr %3578, i64 1936
  %3632 = load ptr, ptr %3631, align 16, !tbaa !46
  %3633 = getelementptr inbounds <2 x double>, ptr %3632, i64 %3592
  %3634 = load <2 x double>, ptr %3633, align 16, !tbaa !25
  %3635 = icmp eq <2 x i64> %3621, zeroinitializer
  %3636 = select <2 x i1> %3635, <2 x double> %3634, <2 x double> %3630
  store <2 x double> %3636, ptr %3633, align 16, !tbaa !25
  %3637 = load i64, ptr %3591, align 16, !tbaa !30
  %3638 = add nsw i64 %3637, 1
  %3639 = icmp slt i64 %3638, %3586
  br i1 %3639, label %3640, label %3644

3640:                                             ; preds = %3611
  %3641 = getelementptr inbounds nuw i8, ptr %3578, i64 2000
  br label %3686

3642:                                             ; preds = %3686
  %3643 = load i64, ptr %3591, align 16, !tbaa !30
  br label %3644

3644:                                             ; preds = %3642, %3611
  %3645 = phi i64 [ %3637, %3611 ], [ %3643, %3642 ]
  %3646 = phi <2 x double> [ %3630, %3611 ], [ %3691, %3642 ]
  %3647 = icmp sgt i64 %3584, %3645
  br i1 %3647, label %3655, label %3648

3648:                                             ; preds = %3644
  %3649 = getelementptr inbounds nuw i8, ptr %3578, i64 1984
  %3650 = load ptr, ptr %3649, align 16, !tbaa !66
  %3651 = getelementptr inbounds <2 x double>, ptr %3650, i64 %3586
  %3652 = load <2 x double>, ptr %3651, align 16, !tbaa !25
  %3653 = load <2 x double>, ptr %3624, align 16, !tbaa !25
  %3654 = fmul <2 x double> %3652, %3653
  br label %3663

3655:                                             ; preds = %3644
  %3656 = load <2 x double>, ptr %3624, align 16, !tbaa !25
  %3657 = getelementptr inbounds nuw i8, ptr %3578, i64 1984
  %3658 = load ptr, ptr %3657, align 16, !tbaa !66
  %3659 = getelementptr inbounds <2 x double>, ptr %3658, i64 %3586
  %3660 = load <2 x double>, ptr %3659, align 16, !tbaa !25
  %3661 = fsub <2 x double> %3590, %3656
  %3662 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3660, <2 x double> %3661, <2 x double> %3656)
  br label %3663

3663:                                             ; preds = %3655, %3648
  %3664 = phi <2 x double> [ %3654, %3648 ], [ %3662, %3655 ]
  %3665 = load ptr, ptr %3627, align 8, !tbaa !59
  %3666 = getelementptr inbounds <2 x double>, ptr %3665, i64 %3586
  %3667 = load <2 x double>, ptr %3666, align 16, !tbaa !25
  %3668 = load ptr, ptr %3631, align 16, !tbaa !46
  %3669 = getelementptr inbounds <2 x double>, ptr %3668, i64 %3586
  %3670 = fsub <2 x double> %3646, %3667
  %3671 = fsub <2 x double> %3613, %3664
  %3672 = load <2 x double>, ptr %3614, align 16, !tbaa !25
  %3673 = fsub <2 x double> %3672, %3664
  %3674 = fdiv <2 x double> %3671, %3673
  %3675 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3670, <2 x double> %3674, <2 x double> %3667)
  %3676 = load <2 x double>, ptr %3669, align 16, !tbaa !25
  %3677 = select <2 x i1> %3635, <2 x double> %3676, <2 x double> %3675
  store <2 x double> %3677, ptr %3669, align 16, !tbaa !25
  %3678 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3622)
  %3679 = icmp eq i64 %3678, 0
  br i1 %3679, label %3840, label %3680

3680:                                             ; preds = %3663
  %3681 = getelementptr inbounds nuw i8, ptr %3578, i64 1984
  %3682 = getelementptr inbounds nuw i8, ptr %3578, i64 784
  %3683 = getelementptr inbounds nuw i8, ptr %3578, i64 208
  %3684 = extractelement <2 x i64> %3622, i64 0
  %3685 = extractelement <2 x i64> %3622, i64 1
  br label %3704

3686:                                             ; preds = %3640, %3686
  %3687 = phi i64 [ %3638, %3640 ], [ %3702, %3686 ]
  %3688 = phi <2 x double> [ %3630, %3640 ], [ %3691, %3686 ]
  %3689 = load ptr, ptr %3627, align 8, !tbaa !59
  %3690 = getelementptr inbounds <2 x double>, ptr %3689, i64 %3687
  %3691 = load <2 x double>, ptr %3690, align 16, !tbaa !25
  %3692 = load ptr, ptr %3631, align 16, !tbaa !46
  %3693 = getelementptr inbounds <2 x double>, ptr %3692, i64 %3687
  %3694 = fsub <2 x double> %3688, %3691
  %3695 = load ptr, ptr %3641, align 16, !tbaa !117
  %3696 = getelementptr inbounds <2 x double>, ptr %3695, i64 %3687
  %3697 = load <2 x double>, ptr %3696, align 16, !tbaa !25
  %3698 = fmul <2 x double> %3626, %3697
  %3699 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3694, <2 x double> %3698, <2 x double> %3691)
  %3700 = load <2 x double>, ptr %3693, align 16, !tbaa !25
  %3701 = select <2 x i1> %3635, <2 x double> %3700, <2 x double> %3699
  store <2 x double> %3701, ptr %3693, align 16, !tbaa !25
  %3702 = add nsw i64 %3687, 1
  %3703 = icmp eq i64 %3702, %3586
  br i1 %3703, label %3642, label %3686, !llvm.loop !118

3704:                                             ; preds = %3680, %3839
  %3705 = phi i1 [ true, %3680 ], [ false, %3839 ]
  %3706 = phi i64 [ %3684, %3680 ], [ %3685, %3839 ]
  %3707 = phi i64 [ 0, %3680 ], [ 1, %3839 ]
  %3708 = icmp eq i64 %3706, 0
  br i1 %3708, label %3839, label %3709

3709:                                             ; preds = %3704
  %3710 = load i64, ptr %131, align 8, !tbaa !20
  %3711 = load i64, ptr %3591, align 16, !tbaa !30
  %3712 = getelementptr inbounds nuw double, ptr %3624, i64 %3707
  %3713 = load double, ptr %3712, align 8, !tbaa !41
  %3714 = getelementptr inbounds nuw double, ptr %3614, i64 %3707
  %3715 = load double, ptr %3714, align 8, !tbaa !41
  %3716 = add nsw i64 %3710, -1
  %3717 = icmp sgt i64 %3710, %3711
  br i1 %3717, label %3718, label %3839

3718:                                             ; preds = %3709
  %3719 = getelementptr inbounds nuw double, ptr %3589, i64 %3707
  %3720 = load double, ptr %3719, align 8, !tbaa !41
  %3721 = getelementptr inbounds nuw double, ptr %3587, i64 %3707
  %3722 = load double, ptr %3721, align 8, !tbaa !41
  %3723 = load ptr, ptr %3681, align 16
  %3724 = getelementptr i8, ptr %3723, i64 16
  %3725 = getelementptr double, ptr %3724, i64 %3707
  %3726 = fsub double %3720, %3713
  %3727 = getelementptr double, ptr %3723, i64 %3707
  %3728 = fsub double %3722, %3713
  %3729 = load ptr, ptr %3627, align 8, !tbaa !59
  %3730 = getelementptr double, ptr %3729, i64 %3707
  %3731 = load ptr, ptr %3631, align 16, !tbaa !46
  %3732 = getelementptr double, ptr %3731, i64 %3707
  %3733 = getelementptr <2 x double>, ptr %3727, i64 %3716
  br label %3761

3734:                                             ; preds = %3807
  %3735 = getelementptr inbounds nuw double, ptr %3617, i64 %3707
  %3736 = load double, ptr %3735, align 8, !tbaa !41
  %3737 = fcmp ogt double %3736, 0.000000e+00
  %3738 = fcmp ogt double %3818, 0.000000e+00
  %3739 = select i1 %3737, i1 %3738, i1 false
  br i1 %3739, label %3740, label %3839

3740:                                             ; preds = %3734
  %3741 = getelementptr inbounds nuw double, ptr %3682, i64 %3707
  %3742 = getelementptr inbounds nuw double, ptr %3683, i64 %3707
  %3743 = sub i64 %3710, %3711
  %3744 = add i64 %3711, 1
  %3745 = and i64 %3743, 1
  %3746 = icmp eq i64 %3745, 0
  br i1 %3746, label %3756, label %3747

3747:                                             ; preds = %3740
  %3748 = load double, ptr %3741, align 8, !tbaa !41
  %3749 = load double, ptr %3742, align 8, !tbaa !41
  %3750 = fmul double %3818, %3749
  %3751 = fdiv double %3748, %3750
  %3752 = getelementptr <2 x double>, ptr %3732, i64 %3711
  %3753 = load double, ptr %3752, align 8, !tbaa !41
  %3754 = fmul double %3753, %3751
  store double %3754, ptr %3752, align 8, !tbaa !41
  %3755 = add nsw i64 %3711, 1
  br label %3756

3756:                                             ; preds = %3747, %3740
  %3757 = phi i64 [ %3711, %3740 ], [ %3755, %3747 ]
  %3758 = icmp eq i64 %3710, %3744
  br i1 %3758, label %3839, label %3759

3759:                                             ; preds = %3756
  %3760 = getelementptr i8, ptr %3732, i64 16
  br label %3821

3761:                                             ; preds = %3807, %3718
  %3762 = phi double [ 0.000000e+00, %3718 ], [ %3818, %3807 ]
  %3763 = phi i64 [ %3716, %3718 ], [ %3819, %3807 ]
  %3764 = icmp eq i64 %3763, %3716
  br i1 %3764, label %3765, label %3768

3765:                                             ; preds = %3761
  %3766 = load double, ptr %3733, align 8, !tbaa !41
  %3767 = tail call noundef double @llvm.fmuladd.f64(double %3766, double %3726, double %3713)
  br label %3779

3768:                                             ; preds = %3761
  %3769 = getelementptr <2 x double>, ptr %3725, i64 %3763
  %3770 = load double, ptr %3769, align 8, !tbaa !41
  %3771 = tail call noundef double @llvm.fmuladd.f64(double %3770, double %3726, double %3713)
  %3772 = getelementptr <2 x double>, ptr %3727, i64 %3763
  %3773 = load double, ptr %3772, align 8, !tbaa !41
  %3774 = tail call noundef double @llvm.fmuladd.f64(double %3773, double %3726, double %3713)
  %3775 = tail call noundef double @llvm.fmuladd.f64(double %3770, double %3728, double %3713)
  %3776 = fcmp ult double %3775, %3771
  br i1 %3776, label %3777, label %3779

3777:                                             ; preds = %3768
  %3778 = add nsw i64 %3763, 1
  br label %3779

3779:                                             ; preds = %3777, %3768, %3765
  %3780 = phi double [ %3774, %3777 ], [ %3774, %3768 ], [ %3767, %3765 ]
  %3781 = phi double [ %3771, %3777 ], [ %3771, %3768 ], [ %3715, %3765 ]
  %3782 = phi i64 [ %3778, %3777 ], [ %3763, %3768 ], [ %3716, %3765 ]
  %3783 = icmp sgt i64 %3782, %3711
  br i1 %3783, label %3784, label %3807

3784:                                             ; preds = %3779
  %3785 = load ptr, ptr %3627, align 8
  %3786 = getelementptr double, ptr %3785, i64 %3707
  br label %3787

3787:                                             ; preds = %3802, %3784
  %3788 = phi i64 [ %3782, %3784 ], [ %3805, %3802 ]
  %3789 = phi double [ 0.000000e+00, %3784 ], [ %3804, %3802 ]
  %3790 = phi double [ %3781, %3784 ], [ %3803, %3802 ]
  %3791 = getelementptr <2 x double>, ptr %3727, i64 %3788
  %3792 = load double, ptr %3791, align 8, !tbaa !41
  %3793 = tail call noundef double @llvm.fmuladd.f64(double %3792, double %3728, double %3713)
  %3794 = fcmp ogt double %3793, %3780
  br i1 %3794, label %3795, label %3807

3795:                                             ; preds = %3787
  %3796 = fcmp ogt double %3790, %3793
  br i1 %3796, label %3797, label %3802

3797:                                             ; preds = %3795
  %3798 = getelementptr <2 x double>, ptr %3786, i64 %3788
  %3799 = load double, ptr %3798, align 8, !tbaa !41
  %3800 = fsub double %3790, %3793
  %3801 = tail call double @llvm.fmuladd.f64(double %3799, double %3800, double %3789)
  br label %3802

3802:                                             ; preds = %3797, %3795
  %3803 = phi double [ %3793, %3797 ], [ %3790, %3795 ]
  %3804 = phi double [ %3801, %3797 ], [ %3789, %3795 ]
  %3805 = add nsw i64 %3788, -1
  %3806 = icmp sgt i64 %3805, %3711
  br i1 %3806, label %3787, label %3807, !llvm.loop !119

3807:                                             ; preds = %3802, %3787, %3779
  %3808 = phi double [ %3781, %3779 ], [ %3790, %3787 ], [ %3803, %3802 ]
  %3809 = phi double [ 0.000000e+00, %3779 ], [ %3789, %3787 ], [ %3804, %3802 ]
  %3810 = phi i64 [ %3782, %3779 ], [ %3788, %3787 ], [ %3711, %3802 ]
  %3811 = getelementptr <2 x double>, ptr %3730, i64 %3810
  %3812 = load double, ptr %3811, align 8, !tbaa !41
  %3813 = fsub double %3808, %3780
  %3814 = tail call double @llvm.fmuladd.f64(double %3812, double %3813, double %3809)
  %3815 = fsub double %3781, %3780
  %3816 = fdiv double %3814, %3815
  %3817 = getelementptr <2 x double>, ptr %3732, i64 %3763
  store double %3816, ptr %3817, align 8, !tbaa !41
  %3818 = fadd double %3762, %3814
  %3819 = add nsw i64 %3763, -1
  %3820 = icmp sgt i64 %3763, %3711
  br i1 %3820, label %3761, label %3734, !llvm.loop !120

3821:                                             ; preds = %3821, %3759
  %3822 = phi i64 [ %3757, %3759 ], [ %3837, %3821 ]
  %3823 = load double, ptr %3741, align 8, !tbaa !41
  %3824 = load double, ptr %3742, align 8, !tbaa !41
  %3825 = fmul double %3818, %3824
  %3826 = fdiv double %3823, %3825
  %3827 = getelementptr <2 x double>, ptr %3732, i64 %3822
  %3828 = load double, ptr %3827, align 8, !tbaa !41
  %3829 = fmul double %3828, %3826
  store double %3829, ptr %3827, align 8, !tbaa !41
  %3830 = load double, ptr %3741, align 8, !tbaa !41
  %3831 = load double, ptr %3742, align 8, !tbaa !41
  %3832 = fmul double %3818, %3831
  %3833 = fdiv double %3830, %3832
  %3834 = getelementptr <2 x double>, ptr %3760, i64 %3822
  %3835 = load double, ptr %3834, align 8, !tbaa !41
  %3836 = fmul double %3835, %3833
  store double %3836, ptr %3834, align 8, !tbaa !41
  %3837 = add nsw i64 %3822, 2
  %3838 = icmp eq i64 %3837, %3710
  br i1 %3838, label %3839, label %3821, !llvm.loop !121

3839:                                             ; preds = %3756, %3821, %3734, %3709, %3704
  br i1 %3705, label %3704, label %3840, !llvm.loop !122

3840:                                             ; preds = %3839, %3663
  %3841 = load i64, ptr %131, align 8, !tbaa !20
  br label %3842

3842:                                             ; preds = %3575, %3840
  %3843 = phi i64 [ %3584, %3575 ], [ %3841, %3840 ]
  %3844 = icmp sgt i64 %3843, 0
  br i1 %3844, label %3845, label %3849

3845:                                             ; preds = %3842
  %3846 = getelementptr inbounds nuw i8, ptr %3578, i64 1912
  %3847 = getelementptr inbounds nuw i8, ptr %3578, i64 1904
  %3848 = getelementptr inbounds nuw i8, ptr %3578, i64 1896
  br label %3859

3849:                                             ; preds = %3859, %3842
  %3850 = load i64, ptr %132, align 16, !tbaa !21
  %3851 = icmp sgt i64 %3850, 0
  br i1 %3851, label %3852, label %3878

3852:                                             ; preds = %3849
  %3853 = getelementptr inbounds nuw i8, ptr %3578, i64 2080
  %3854 = getelementptr inbounds nuw i8, ptr %3578, i64 2072
  %3855 = getelementptr inbounds nuw i8, ptr %3578, i64 2064
  %3856 = getelementptr inbounds nuw i8, ptr %3578, i64 2032
  %3857 = getelementptr inbounds nuw i8, ptr %3578, i64 2024
  %3858 = getelementptr inbounds nuw i8, ptr %3578, i64 2016
  br label %3882

3859:                                             ; preds = %3845, %3859
  %3860 = phi i64 [ 0, %3845 ], [ %3875, %3859 ]
  %3861 = load ptr, ptr %3846, align 8, !tbaa !55
  %3862 = getelementptr inbounds nuw <2 x double>, ptr %3861, i64 %3860
  %3863 = load ptr, ptr %3847, align 16, !tbaa !45
  %3864 = getelementptr inbounds nuw <2 x double>, ptr %3863, i64 %3860
  %3865 = load <2 x double>, ptr %3864, align 16, !tbaa !25
  %3866 = load <2 x double>, ptr %3862, align 16, !tbaa !25
  %3867 = select <2 x i1> %3546, <2 x double> %3866, <2 x double> %3865
  store <2 x double> %3867, ptr %3862, align 16, !tbaa !25
  %3868 = load ptr, ptr %3847, align 16, !tbaa !45
  %3869 = getelementptr inbounds nuw <2 x double>, ptr %3868, i64 %3860
  %3870 = load ptr, ptr %3848, align 8, !tbaa !56
  %3871 = getelementptr inbounds nuw <2 x double>, ptr %3870, i64 %3860
  %3872 = load <2 x double>, ptr %3871, align 16, !tbaa !25
  %3873 = load <2 x double>, ptr %3869, align 16, !tbaa !25
  %3874 = select <2 x i1> %3546, <2 x double> %3873, <2 x double> %3872
  store <2 x double> %3874, ptr %3869, align 16, !tbaa !25
  %3875 = add nuw nsw i64 %3860, 1
  %3876 = load i64, ptr %131, align 8, !tbaa !20
  %3877 = icmp slt i64 %3875, %3876
  br i1 %3877, label %3859, label %3849, !llvm.loop !123

3878:                                             ; preds = %3882, %3849
  %3879 = getelementptr inbounds nuw i8, ptr %3578, i64 1120
  %3880 = getelementptr inbounds nuw i8, ptr %3578, i64 928
  %3881 = getelementptr inbounds nuw i8, ptr %3578, i64 736
  br label %3930

3882:                                             ; preds = %3852, %3882
  %3883 = phi i64 [ 0, %3852 ], [ %3912, %3882 ]
  %3884 = load ptr, ptr %3853, align 16, !tbaa !62
  %3885 = getelementptr inbounds nuw <2 x double>, ptr %3884, i64 %3883
  %3886 = load ptr, ptr %3854, align 8, !tbaa !48
  %3887 = getelementptr inbounds nuw <2 x double>, ptr %3886, i64 %3883
  %3888 = load <2 x double>, ptr %3887, align 16, !tbaa !25
  %3889 = load <2 x double>, ptr %3885, align 16, !tbaa !25
  %3890 = select <2 x i1> %3546, <2 x double> %3889, <2 x double> %3888
  store <2 x double> %3890, ptr %3885, align 16, !tbaa !25
  %3891 = load ptr, ptr %3854, align 8, !tbaa !48
  %3892 = getelementptr inbounds nuw <2 x double>, ptr %3891, i64 %3883
  %3893 = load ptr, ptr %3855, align 16, !tbaa !73
  %3894 = getelementptr inbounds nuw <2 x double>, ptr %3893, i64 %3883
  %3895 = load <2 x double>, ptr %3894, align 16, !tbaa !25
  %3896 = load <2 x double>, ptr %3892, align 16, !tbaa !25
  %3897 = select <2 x i1> %3546, <2 x double> %3896, <2 x double> %3895
  store <2 x double> %3897, ptr %3892, align 16, !tbaa !25
  %3898 = load ptr, ptr %3856, align 16, !tbaa !63
  %3899 = getelementptr inbounds nuw <2 x double>, ptr %3898, i64 %3883
  %3900 = load ptr, ptr %3857, align 8, !tbaa !49
  %3901 = getelementptr inbounds nuw <2 x double>, ptr %3900, i64 %3883
  %3902 = load <2 x double>, ptr %3901, align 16, !tbaa !25
  %3903 = load <2 x double>, ptr %3899, align 16, !tbaa !25
  %3904 = select <2 x i1> %3546, <2 x double> %3903, <2 x double> %3902
  store <2 x double> %3904, ptr %3899, align 16, !tbaa !25
  %3905 = load ptr, ptr %3857, align 8, !tbaa !49
  %3906 = getelementptr inbounds nuw <2 x double>, ptr %3905, i64 %3883
  %3907 = load ptr, ptr %3858, align 16, !tbaa !104
  %3908 = getelementptr inbounds nuw <2 x double>, ptr %3907, i64 %3883
  %3909 = load <2 x double>, ptr %3908, align 16, !tbaa !25
  %3910 = load <2 x double>, ptr %3906, align 16, !tbaa !25
  %3911 = select <2 x i1> %3546, <2 x double> %3910, <2 x double> %3909
  store <2 x double> %3911, ptr %3906, align 16, !tbaa !25
  %3912 = add nuw nsw i64 %3883, 1
  %3913 = load i64, ptr %132, align 16, !tbaa !21
  %3914 = icmp slt i64 %3912, %3913
  br i1 %3914, label %3882, label %3878, !llvm.loop !124

3915:                                             ; preds = %3930
  %3916 = getelementptr inbounds nuw i8, ptr %3578, i64 1856
  %3917 = getelementptr inbounds nuw i8, ptr %3578, i64 1424
  %3918 = load <2 x double>, ptr %3917, align 16, !tbaa !25
  %3919 = fcmp ogt <2 x double> %3918, zeroinitializer
  %3920 = load <2 x double>, ptr %172, align 16, !tbaa !25
  %3921 = fcmp une <2 x double> %3920, splat (double 2.000000e+00)
  %3922 = and <2 x i1> %3919, %3921
  %3923 = select <2 x i1> %3922, <2 x i64> %3486, <2 x i64> zeroinitializer
  %3924 = load <2 x i64>, ptr %3916, align 16, !tbaa !25
  %3925 = and <2 x i64> %3924, %3574
  %3926 = or disjoint <2 x i64> %3923, %3925
  store <2 x i64> %3926, ptr %3916, align 16, !tbaa !25
  %3927 = add nuw nsw i64 %3576, 1
  %3928 = load i64, ptr %140, align 16, !tbaa !16
  %3929 = icmp slt i64 %3927, %3928
  br i1 %3929, label %3575, label %3951, !llvm.loop !125

3930:                                             ; preds = %3930, %3878
  %3931 = phi i64 [ 0, %3878 ], [ %3949, %3930 ]
  %3932 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3879, i64 0, i64 %3931
  %3933 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3880, i64 0, i64 %3931
  %3934 = load <2 x double>, ptr %3933, align 16, !tbaa !25
  %3935 = load <2 x double>, ptr %3932, align 16, !tbaa !25
  %3936 = select <2 x i1> %3546, <2 x double> %3935, <2 x double> %3934
  store <2 x double> %3936, ptr %3932, align 16, !tbaa !25
  %3937 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3881, i64 0, i64 %3931
  %3938 = load <2 x double>, ptr %3937, align 16, !tbaa !25
  %3939 = select <2 x i1> %3546, <2 x double> %3934, <2 x double> %3938
  store <2 x double> %3939, ptr %3933, align 16, !tbaa !25
  %3940 = or disjoint i64 %3931, 1
  %3941 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3879, i64 0, i64 %3940
  %3942 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3880, i64 0, i64 %3940
  %3943 = load <2 x double>, ptr %3942, align 16, !tbaa !25
  %3944 = load <2 x double>, ptr %3941, align 16, !tbaa !25
  %3945 = select <2 x i1> %3546, <2 x double> %3944, <2 x double> %3943
  store <2 x double> %3945, ptr %3941, align 16, !tbaa !25
  %3946 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3881, i64 0, i64 %3940
  %3947 = load <2 x double>, ptr %3946, align 16, !tbaa !25
  %3948 = select <2 x i1> %3546, <2 x double> %3943, <2 x double> %3947
  store <2 x double> %3948, ptr %3942, align 16, !tbaa !25
  %3949 = add nuw nsw i64 %3931, 2
  %3950 = icmp eq i64 %3949, 12
  br i1 %3950, label %3915, label %3930, !llvm.loop !126

3951:                                             ; preds = %3915
  %3952 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %3953 = load <2 x double>, ptr %169, align 16, !tbaa !25
  %3954 = load <2 x double>, ptr %213, align 16, !tbaa !25
  %3955 = load <2 x double>, ptr %154, align 16, !tbaa !25
  %3956 = load <2 x double>, ptr %211, align 16, !tbaa !25
  %3957 = fdiv <2 x double> %3954, %3159
  %3958 = icmp sgt i64 %3928, 0
  br label %3959

3959:                                             ; preds = %3545, %3951
  %3960 = phi <2 x double> [ %3957, %3951 ], [ %3169, %3545 ]
  %3961 = phi i1 [ %3958, %3951 ], [ false, %3545 ]
  %3962 = phi <2 x double> [ %3956, %3951 ], [ %3148, %3545 ]
  %3963 = phi <2 x double> [ %3955, %3951 ], [ %3474, %3545 ]
  %3964 = phi <2 x double> [ %3953, %3951 ], [ %3165, %3545 ]
  %3965 = phi <2 x double> [ %3952, %3951 ], [ %3163, %3545 ]
  %3966 = load <2 x double>, ptr %150, align 16, !tbaa !25
  %3967 = fadd <2 x double> %3966, %3965
  %3968 = select <2 x i1> %3546, <2 x double> %3966, <2 x double> %3967
  store <2 x double> %3968, ptr %150, align 16, !tbaa !25
  %3969 = load <2 x double>, ptr %155, align 16, !tbaa !25
  %3970 = select <2 x i1> %3546, <2 x double> %3969, <2 x double> %3965
  store <2 x double> %3970, ptr %155, align 16, !tbaa !25
  %3971 = load <2 x double>, ptr %135, align 16, !tbaa !25
  %3972 = fadd <2 x double> %3971, splat (double 1.000000e+00)
  %3973 = select <2 x i1> %3546, <2 x double> %3971, <2 x double> %3972
  store <2 x double> %3973, ptr %135, align 16, !tbaa !25
  %3974 = load <2 x double>, ptr %137, align 16, !tbaa !25
  %3975 = fcmp olt <2 x double> %3974, %3965
  %3976 = select <2 x i1> %3546, <2 x i1> splat (i1 true), <2 x i1> %3975
  %3977 = select <2 x i1> %3976, <2 x double> %3974, <2 x double> %3965
  store <2 x double> %3977, ptr %137, align 16, !tbaa !25
  %3978 = fcmp une <2 x double> %3964, zeroinitializer
  %3979 = fcmp ueq <2 x double> %3158, zeroinitializer
  %3980 = or <2 x i1> %3979, %3978
  %3981 = fcmp olt <2 x double> %3960, splat (double 1.400000e+00)
  %3982 = select <2 x i1> %3981, <2 x double> %3960, <2 x double> splat (double 1.400000e+00)
  %3983 = select <2 x i1> %3980, <2 x double> splat (double 1.400000e+00), <2 x double> %3982
  %3984 = fcmp ogt <2 x double> %3983, splat (double 2.000000e-01)
  %3985 = select <2 x i1> %3984, <2 x double> %3983, <2 x double> splat (double 2.000000e-01)
  %3986 = fmul <2 x double> %3965, %3985
  %3987 = fmul <2 x double> %3965, splat (double 4.000000e+00)
  %3988 = fcmp olt <2 x double> %3963, %3987
  %3989 = select <2 x i1> %3988, <2 x double> %3963, <2 x double> %3987
  %3990 = fcmp ogt <2 x double> %3986, %3989
  %3991 = select <2 x i1> %3990, <2 x double> %3986, <2 x double> %3989
  %3992 = select <2 x i1> %3546, <2 x double> %3963, <2 x double> zeroinitializer
  store <2 x double> %3992, ptr %154, align 16, !tbaa !25
  %3993 = select <2 x i1> %3546, <2 x double> %3962, <2 x double> zeroinitializer
  store <2 x double> %3993, ptr %211, align 16, !tbaa !25
  %3994 = load <2 x i64>, ptr %157, align 16, !tbaa !25
  %3995 = and <2 x i64> %3994, %3574
  store <2 x i64> %3995, ptr %157, align 16, !tbaa !25
  br i1 %3961, label %3996, label %4293

3996:                                             ; preds = %3959, %4286
  %3997 = phi i64 [ %4288, %4286 ], [ 0, %3959 ]
  %3998 = phi <2 x double> [ %4287, %4286 ], [ %3991, %3959 ]
  %3999 = load ptr, ptr %141, align 8, !tbaa !27
  %4000 = getelementptr inbounds nuw %struct.Piece, ptr %3999, i64 %3997
  %4001 = getelementptr inbounds nuw i8, ptr %4000, i64 944
  %4002 = load <2 x double>, ptr %4001, align 16, !tbaa !25
  %4003 = getelementptr inbounds nuw i8, ptr %4000, i64 368
  %4004 = load <2 x double>, ptr %4003, align 16, !tbaa !25
  %4005 = fmul <2 x double> %4004, splat (double 1.001000e+00)
  %4006 = fcmp ole <2 x double> %4002, %4005
  %4007 = getelementptr inbounds nuw i8, ptr %4000, i64 400
  %4008 = load <2 x double>, ptr %4007, align 16, !tbaa !25
  %4009 = getelementptr inbounds nuw i8, ptr %4000, i64 1008
  %4010 = load <2 x double>, ptr %4009, align 16, !tbaa !25
  %4011 = fsub <2 x double> %4008, %4010
  %4012 = fmul <2 x double> %4008, splat (double 1.000000e-04)
  %4013 = fcmp ole <2 x double> %4011, %4012
  %4014 = getelementptr inbounds nuw i8, ptr %4000, i64 1840
  %4015 = load <2 x i64>, ptr %4014, align 16, !tbaa !25
  %4016 = and <2 x i64> %4015, %3486
  %4017 = getelementptr inbounds nuw i8, ptr %4000, i64 1824
  %4018 = load <2 x double>, ptr %4017, align 16, !tbaa !25
  %4019 = fcmp oeq <2 x double> %4018, zeroinitializer
  %4020 = and <2 x i1> %4006, %4019
  %4021 = fcmp oeq <2 x double> %4018, splat (double 1.000000e+00)
  %4022 = and <2 x i1> %4013, %4021
  %4023 = or <2 x i1> %4020, %4022
  %4024 = select <2 x i1> %4023, <2 x i64> %4016, <2 x i64> zeroinitializer
  %4025 = fadd <2 x double> %4018, splat (double 1.000000e+00)
  %4026 = icmp eq <2 x i64> %4024, zeroinitializer
  %4027 = select <2 x i1> %4026, <2 x double> %4018, <2 x double> %4025
  store <2 x double> %4027, ptr %4017, align 16, !tbaa !25
  %4028 = getelementptr inbounds nuw i8, ptr %4000, i64 1856
  %4029 = load <2 x i64>, ptr %4028, align 16, !tbaa !25
  %4030 = or <2 x i64> %4024, %4029
  store <2 x i64> %4030, ptr %4028, align 16, !tbaa !25
  %4031 = getelementptr inbounds nuw i8, ptr %4000, i64 224
  %4032 = load <2 x double>, ptr %4031, align 16, !tbaa !25
  %4033 = getelementptr inbounds nuw i8, ptr %4000, i64 1408
  %4034 = load <2 x double>, ptr %4033, align 16, !tbaa !25
  %4035 = getelementptr inbounds nuw i8, ptr %4000, i64 1424
  %4036 = load <2 x double>, ptr %4035, align 16, !tbaa !25
  %4037 = fadd <2 x double> %4034, %4036
  %4038 = fcmp ogt <2 x double> %4037, zeroinitializer
  %4039 = xor <2 x i64> %4015, splat (i64 -1)
  %4040 = and <2 x i64> %3486, %4039
  %4041 = fcmp une <2 x double> %4032, zeroinitializer
  %4042 = or <2 x i1> %4041, %4038
  %4043 = getelementptr inbounds nuw i8, ptr %4000, i64 960
  %4044 = load <2 x double>, ptr %4043, align 16, !tbaa !25
  %4045 = fmul <2 x double> %4032, splat (double 1.000000e-04)
  %4046 = fcmp ogt <2 x double> %4045, splat (double 0x3E7AD7F29ABCAF48)
  %4047 = select <2 x i1> %4046, <2 x double> %4045, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4048 = fcmp ole <2 x double> %4044, %4047
  %4049 = select <2 x i1> %4048, <2 x i1> %4042, <2 x i1> zeroinitializer
  %4050 = select <2 x i1> %4049, <2 x i64> %4040, <2 x i64> zeroinitializer
  %4051 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4050)
  %4052 = icmp eq i64 %4051, 0
  br i1 %4052, label %4286, label %4053

4053:                                             ; preds = %3996
  %4054 = load i64, ptr %131, align 8, !tbaa !20
  %4055 = load i64, ptr %132, align 16, !tbaa !21
  %4056 = getelementptr inbounds nuw i8, ptr %4000, i64 1104
  %4057 = load <2 x double>, ptr %4056, align 16, !tbaa !25
  %4058 = getelementptr inbounds nuw i8, ptr %4000, i64 1392
  %4059 = load <2 x double>, ptr %4058, align 16, !tbaa !25
  %4060 = getelementptr inbounds nuw i8, ptr %4000, i64 208
  %4061 = load <2 x double>, ptr %4060, align 16, !tbaa !25
  %4062 = getelementptr inbounds nuw i8, ptr %4000, i64 1936
  %4063 = load ptr, ptr %4062, align 16, !tbaa !46
  %4064 = add nsw i64 %4054, -1
  %4065 = getelementptr inbounds <2 x double>, ptr %4063, i64 %4064
  %4066 = load <2 x double>, ptr %4065, align 16, !tbaa !25
  %4067 = fmul <2 x double> %4061, %4066
  %4068 = fneg <2 x double> %4044
  %4069 = fdiv <2 x double> %4068, %4067
  %4070 = fcmp ogt <2 x double> %4069, splat (double 0x3E7AD7F29ABCAF48)
  %4071 = select <2 x i1> %4070, <2 x double> %4069, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4072 = load <2 x double>, ptr %4000, align 16, !tbaa !25
  %4073 = fsub <2 x double> %4072, %4071
  %4074 = getelementptr inbounds nuw i8, ptr %4000, i64 640
  %4075 = load <2 x double>, ptr %4074, align 16, !tbaa !25
  %4076 = getelementptr inbounds nuw i8, ptr %4000, i64 656
  %4077 = load <2 x double>, ptr %4076, align 16, !tbaa !25
  %4078 = getelementptr inbounds nuw i8, ptr %4000, i64 672
  %4079 = load <2 x double>, ptr %4078, align 16, !tbaa !25
  %4080 = getelementptr inbounds nuw i8, ptr %4000, i64 688
  %4081 = load <2 x double>, ptr %4080, align 16, !tbaa !25
  %4082 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4073, <2 x double> %4081, <2 x double> %4079)
  %4083 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4073, <2 x double> %4082, <2 x double> %4077)
  %4084 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4073, <2 x double> %4083, <2 x double> %4075)
  %4085 = getelementptr inbounds nuw i8, ptr %4000, i64 1904
  %4086 = load ptr, ptr %4085, align 16, !tbaa !45
  %4087 = getelementptr inbounds <2 x double>, ptr %4086, i64 %4064
  %4088 = load <2 x double>, ptr %4087, align 16, !tbaa !25
  %4089 = getelementptr inbounds nuw i8, ptr %4000, i64 1888
  %4090 = load i64, ptr %4089, align 16, !tbaa !30
  %4091 = icmp sgt i64 %4054, %4090
  br i1 %4091, label %4095, label %4092

4092:                                             ; preds = %4053
  %4093 = getelementptr inbounds nuw i8, ptr %4000, i64 160
  %4094 = load <2 x double>, ptr %4093, align 16, !tbaa !25
  br label %4106

4095:                                             ; preds = %4053
  %4096 = getelementptr inbounds nuw i8, ptr %4000, i64 96
  %4097 = load <2 x double>, ptr %4096, align 16, !tbaa !25
  %4098 = getelementptr inbounds nuw i8, ptr %4000, i64 112
  %4099 = load <2 x double>, ptr %4098, align 16, !tbaa !25
  %4100 = getelementptr inbounds nuw i8, ptr %4000, i64 128
  %4101 = load <2 x double>, ptr %4100, align 16, !tbaa !25
  %4102 = fmul <2 x double> %4088, %4101
  %4103 = fmul <2 x double> %4102, splat (double 0x3FD5555555555555)
  %4104 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4099, <2 x double> splat (double 5.000000e-01), <2 x double> %4103)
  %4105 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4088, <2 x double> %4104, <2 x double> %4097)
  br label %4106

4106:                                             ; preds = %4095, %4092
  %4107 = phi <2 x double> [ %4094, %4092 ], [ %4105, %4095 ]
  %4108 = fmul <2 x double> %4088, %4107
  %4109 = icmp sgt i64 %4054, 0
  br i1 %4109, label %4110, label %4120

4110:                                             ; preds = %4106
  %4111 = getelementptr inbounds nuw i8, ptr %4000, i64 160
  %4112 = getelementptr inbounds nuw i8, ptr %4000, i64 96
  %4113 = getelementptr inbounds nuw i8, ptr %4000, i64 112
  %4114 = getelementptr inbounds nuw i8, ptr %4000, i64 128
  %4115 = getelementptr inbounds nuw i8, ptr %4000, i64 384
  %4116 = getelementptr inbounds nuw i8, ptr %4000, i64 1984
  %4117 = icmp eq <2 x i64> %4050, zeroinitializer
  br label %4132

4118:                                             ; preds = %4211
  %4119 = load <2 x double>, ptr %4000, align 16, !tbaa !25
  br label %4120

4120:                                             ; preds = %4118, %4106
  %4121 = phi <2 x double> [ %4119, %4118 ], [ %4072, %4106 ]
  %4122 = fsub <2 x double> %4121, %4073
  %4123 = sitofp i64 %4055 to double
  %4124 = insertelement <2 x double> poison, double %4123, i64 0
  %4125 = shufflevector <2 x double> %4124, <2 x double> poison, <2 x i32> zeroinitializer
  %4126 = fdiv <2 x double> %4122, %4125
  %4127 = icmp sgt i64 %4055, 0
  br i1 %4127, label %4128, label %4242

4128:                                             ; preds = %4120
  %4129 = getelementptr inbounds nuw i8, ptr %4000, i64 2072
  %4130 = icmp eq <2 x i64> %4050, zeroinitializer
  %4131 = getelementptr inbounds nuw i8, ptr %4000, i64 2024
  br label %4219

4132:                                             ; preds = %4110, %4211
  %4133 = phi <2 x double> [ %4088, %4110 ], [ %4181, %4211 ]
  %4134 = phi <2 x double> [ %4108, %4110 ], [ %4182, %4211 ]
  %4135 = phi <2 x double> [ %4084, %4110 ], [ %4180, %4211 ]
  %4136 = phi i64 [ %4064, %4110 ], [ %4217, %4211 ]
  %4137 = icmp eq i64 %4136, 0
  br i1 %4137, label %4179, label %4138

4138:                                             ; preds = %4132
  %4139 = load ptr, ptr %4085, align 16, !tbaa !45
  %4140 = getelementptr <2 x double>, ptr %4139, i64 %4136
  %4141 = getelementptr i8, ptr %4140, i64 -16
  %4142 = load <2 x double>, ptr %4141, align 16, !tbaa !25
  %4143 = load i64, ptr %4089, align 16, !tbaa !30
  %4144 = icmp sgt i64 %4136, %4143
  br i1 %4144, label %4147, label %4145

4145:                                             ; preds = %4138
  %4146 = load <2 x double>, ptr %4111, align 16, !tbaa !25
  br label %4155

4147:                                             ; preds = %4138
  %4148 = load <2 x double>, ptr %4112, align 16, !tbaa !25
  %4149 = load <2 x double>, ptr %4113, align 16, !tbaa !25
  %4150 = load <2 x double>, ptr %4114, align 16, !tbaa !25
  %4151 = fmul <2 x double> %4142, %4150
  %4152 = fmul <2 x double> %4151, splat (double 0x3FD5555555555555)
  %4153 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4149, <2 x double> splat (double 5.000000e-01), <2 x double> %4152)
  %4154 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4142, <2 x double> %4153, <2 x double> %4148)
  br label %4155

4155:                                             ; preds = %4145, %4147
  %4156 = phi <2 x double> [ %4154, %4147 ], [ %4146, %4145 ]
  %4157 = fmul <2 x double> %4142, %4156
  %4158 = icmp slt i64 %4136, %4143
  br i1 %4158, label %4159, label %4166

4159:                                             ; preds = %4155
  %4160 = load ptr, ptr %4116, align 16, !tbaa !66
  %4161 = getelementptr inbounds nuw <2 x double>, ptr %4160, i64 %4136
  %4162 = load <2 x double>, ptr %4161, align 16, !tbaa !25
  %4163 = load <2 x double>, ptr %4115, align 16, !tbaa !25
  %4164 = fmul <2 x double> %4162, %4163
  %4165 = fmul <2 x double> %4162, %4163
  br label %4175

4166:                                             ; preds = %4155
  %4167 = load <2 x double>, ptr %4115, align 16, !tbaa !25
  %4168 = load ptr, ptr %4116, align 16, !tbaa !66
  %4169 = getelementptr inbounds nuw <2 x double>, ptr %4168, i64 %4136
  %4170 = load <2 x double>, ptr %4169, align 16, !tbaa !25
  %4171 = fsub <2 x double> %4084, %4167
  %4172 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4170, <2 x double> %4171, <2 x double> %4167)
  %4173 = fsub <2 x double> %4057, %4167
  %4174 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4170, <2 x double> %4173, <2 x double> %4167)
  br label %4175

4175:                                             ; preds = %4166, %4159
  %4176 = phi <2 x double> [ %4164, %4159 ], [ %4172, %4166 ]
  %4177 = phi <2 x double> [ %4165, %4159 ], [ %4174, %4166 ]
  %4178 = fsub <2 x double> %4177, %4176
  br label %4179

4179:                                             ; preds = %4132, %4175
  %4180 = phi <2 x double> [ %4176, %4175 ], [ zeroinitializer, %4132 ]
  %4181 = phi <2 x double> [ %4142, %4175 ], [ %4133, %4132 ]
  %4182 = phi <2 x double> [ %4157, %4175 ], [ %4134, %4132 ]
  %4183 = phi <2 x double> [ %4178, %4175 ], [ zeroinitializer, %4132 ]
  %4184 = fsub <2 x double> %4135, %4180
  %4185 = fdiv <2 x double> %4183, %4184
  %4186 = fsub <2 x double> %4182, %4134
  %4187 = fmul <2 x double> %4186, %4185
  %4188 = load ptr, ptr %4062, align 16, !tbaa !46
  %4189 = getelementptr inbounds nuw <2 x double>, ptr %4188, i64 %4136
  %4190 = load <2 x double>, ptr %4189, align 16, !tbaa !25
  br i1 %4137, label %4194, label %4191

4191:                                             ; preds = %4179
  %4192 = getelementptr i8, ptr %4189, i64 -16
  %4193 = load <2 x double>, ptr %4192, align 16, !tbaa !25
  br label %4194

4194:                                             ; preds = %4191, %4179
  %4195 = phi <2 x double> [ %4193, %4191 ], [ %4190, %4179 ]
  %4196 = fsub <2 x double> %4195, %4190
  %4197 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4196, <2 x double> %4185, <2 x double> %4190)
  %4198 = select <2 x i1> %4117, <2 x double> %4190, <2 x double> %4197
  store <2 x double> %4198, ptr %4189, align 16, !tbaa !25
  %4199 = load ptr, ptr %4085, align 16, !tbaa !45
  %4200 = getelementptr inbounds nuw <2 x double>, ptr %4199, i64 %4136
  %4201 = load i64, ptr %4089, align 16, !tbaa !30
  %4202 = icmp slt i64 %4136, %4201
  br i1 %4202, label %4203, label %4205

4203:                                             ; preds = %4194
  %4204 = load <2 x double>, ptr %4111, align 16, !tbaa !25
  br label %4211

4205:                                             ; preds = %4194
  %4206 = load <2 x double>, ptr %4112, align 16, !tbaa !25
  %4207 = load <2 x double>, ptr %4113, align 16, !tbaa !25
  %4208 = load <2 x double>, ptr %4114, align 16, !tbaa !25
  %4209 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4133, <2 x double> %4208, <2 x double> %4207)
  %4210 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4133, <2 x double> %4209, <2 x double> %4206)
  br label %4211

4211:                                             ; preds = %4205, %4203
  %4212 = phi <2 x double> [ %4204, %4203 ], [ %4210, %4205 ]
  %4213 = fdiv <2 x double> %4187, %4212
  %4214 = fadd <2 x double> %4133, %4213
  %4215 = load <2 x double>, ptr %4200, align 16, !tbaa !25
  %4216 = select <2 x i1> %4117, <2 x double> %4215, <2 x double> %4214
  store <2 x double> %4216, ptr %4200, align 16, !tbaa !25
  %4217 = add nsw i64 %4136, -1
  %4218 = icmp sgt i64 %4136, 0
  br i1 %4218, label %4132, label %4118, !llvm.loop !127

4219:                                             ; preds = %4128, %4219
  %4220 = phi i64 [ 0, %4128 ], [ %4240, %4219 ]
  %4221 = load ptr, ptr %4129, align 8, !tbaa !48
  %4222 = getelementptr inbounds nuw <2 x double>, ptr %4221, i64 %4220
  %4223 = uitofp nneg i64 %4220 to double
  %4224 = insertelement <2 x double> poison, double %4223, i64 0
  %4225 = shufflevector <2 x double> %4224, <2 x double> poison, <2 x i32> zeroinitializer
  %4226 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4225, <2 x double> %4126, <2 x double> %4073)
  %4227 = load <2 x double>, ptr %4074, align 16, !tbaa !25
  %4228 = load <2 x double>, ptr %4076, align 16, !tbaa !25
  %4229 = load <2 x double>, ptr %4078, align 16, !tbaa !25
  %4230 = load <2 x double>, ptr %4080, align 16, !tbaa !25
  %4231 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4226, <2 x double> %4230, <2 x double> %4229)
  %4232 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4226, <2 x double> %4231, <2 x double> %4228)
  %4233 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4226, <2 x double> %4232, <2 x double> %4227)
  %4234 = load <2 x double>, ptr %4222, align 16, !tbaa !25
  %4235 = select <2 x i1> %4130, <2 x double> %4234, <2 x double> %4233
  store <2 x double> %4235, ptr %4222, align 16, !tbaa !25
  %4236 = load ptr, ptr %4131, align 8, !tbaa !49
  %4237 = getelementptr inbounds nuw <2 x double>, ptr %4236, i64 %4220
  %4238 = load <2 x double>, ptr %4237, align 16, !tbaa !25
  %4239 = select <2 x i1> %4130, <2 x double> %4238, <2 x double> %4059
  store <2 x double> %4239, ptr %4237, align 16, !tbaa !25
  %4240 = add nuw nsw i64 %4220, 1
  %4241 = icmp eq i64 %4240, %4055
  br i1 %4241, label %4242, label %4219, !llvm.loop !128

4242:                                             ; preds = %4219, %4120
  %4243 = fsub <2 x double> %4057, %4084
  %4244 = getelementptr inbounds nuw i8, ptr %4000, i64 928
  %4245 = getelementptr inbounds nuw i8, ptr %4000, i64 2072
  %4246 = load ptr, ptr %4245, align 8, !tbaa !48
  %4247 = getelementptr inbounds <2 x double>, ptr %4246, i64 %4055
  %4248 = getelementptr inbounds nuw i8, ptr %4000, i64 352
  %4249 = load <2 x double>, ptr %4248, align 16, !tbaa !25
  %4250 = load <2 x double>, ptr %4247, align 16, !tbaa !25
  %4251 = icmp eq <2 x i64> %4050, zeroinitializer
  %4252 = select <2 x i1> %4251, <2 x double> %4250, <2 x double> %4249
  store <2 x double> %4252, ptr %4247, align 16, !tbaa !25
  %4253 = load <2 x double>, ptr %4244, align 16, !tbaa !25
  %4254 = select <2 x i1> %4251, <2 x double> %4253, <2 x double> %4073
  store <2 x double> %4254, ptr %4244, align 16, !tbaa !25
  %4255 = load <2 x double>, ptr %4001, align 16, !tbaa !25
  %4256 = select <2 x i1> %4251, <2 x double> %4255, <2 x double> %4084
  store <2 x double> %4256, ptr %4001, align 16, !tbaa !25
  %4257 = load <2 x double>, ptr %4056, align 16, !tbaa !25
  %4258 = select <2 x i1> %4251, <2 x double> %4257, <2 x double> %4084
  store <2 x double> %4258, ptr %4056, align 16, !tbaa !25
  %4259 = getelementptr inbounds nuw i8, ptr %4000, i64 976
  %4260 = load <2 x double>, ptr %4259, align 16, !tbaa !25
  %4261 = fneg <2 x double> %4243
  %4262 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4261, <2 x double> %4067, <2 x double> %4260)
  %4263 = select <2 x i1> %4251, <2 x double> %4260, <2 x double> %4262
  store <2 x double> %4263, ptr %4259, align 16, !tbaa !25
  %4264 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4243, <2 x double> %4067, <2 x double> %4044)
  %4265 = load <2 x double>, ptr %4043, align 16, !tbaa !25
  %4266 = select <2 x i1> %4251, <2 x double> %4265, <2 x double> %4264
  store <2 x double> %4266, ptr %4043, align 16, !tbaa !25
  %4267 = getelementptr inbounds nuw i8, ptr %4000, i64 1040
  %4268 = load <2 x double>, ptr %4267, align 16, !tbaa !25
  %4269 = getelementptr inbounds nuw i8, ptr %4000, i64 192
  %4270 = load <2 x double>, ptr %4269, align 16, !tbaa !25
  %4271 = fneg <2 x double> %4270
  %4272 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4271, <2 x double> %4059, <2 x double> %4108)
  %4273 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4243, <2 x double> %4272, <2 x double> %4268)
  %4274 = select <2 x i1> %4251, <2 x double> %4268, <2 x double> %4273
  store <2 x double> %4274, ptr %4267, align 16, !tbaa !25
  %4275 = load <2 x i64>, ptr %4014, align 16, !tbaa !25
  %4276 = or <2 x i64> %4275, %4050
  store <2 x i64> %4276, ptr %4014, align 16, !tbaa !25
  %4277 = load <2 x i64>, ptr %4028, align 16, !tbaa !25
  %4278 = or <2 x i64> %4277, %4050
  store <2 x i64> %4278, ptr %4028, align 16, !tbaa !25
  %4279 = load <2 x double>, ptr %218, align 16, !tbaa !25
  %4280 = fmul <2 x double> %4279, splat (double 5.000000e+00)
  %4281 = fcmp olt <2 x double> %3998, %4280
  %4282 = select <2 x i1> %4281, <2 x double> %3998, <2 x double> %4280
  %4283 = icmp ne <2 x i64> %4050, zeroinitializer
  %4284 = select <2 x i1> %4041, <2 x i1> %4283, <2 x i1> zeroinitializer
  %4285 = select <2 x i1> %4284, <2 x double> %4282, <2 x double> %3998
  br label %4286

4286:                                             ; preds = %4242, %3996
  %4287 = phi <2 x double> [ %4285, %4242 ], [ %3998, %3996 ]
  %4288 = add nuw nsw i64 %3997, 1
  %4289 = load i64, ptr %140, align 16, !tbaa !16
  %4290 = icmp slt i64 %4288, %4289
  br i1 %4290, label %3996, label %4291, !llvm.loop !129

4291:                                             ; preds = %4286
  %4292 = load <2 x double>, ptr %150, align 16, !tbaa !25
  br label %4293

4293:                                             ; preds = %4291, %3959
  %4294 = phi <2 x double> [ %3968, %3959 ], [ %4292, %4291 ]
  %4295 = phi <2 x double> [ %3991, %3959 ], [ %4287, %4291 ]
  %4296 = load <2 x double>, ptr %146, align 16, !tbaa !25
  %4297 = select <2 x i1> %3546, <2 x double> %4296, <2 x double> %4295
  store <2 x double> %4297, ptr %146, align 16, !tbaa !25
  %4298 = load ptr, ptr %219, align 16, !tbaa !37
  %4299 = getelementptr inbounds nuw i8, ptr %4298, i64 16
  store <2 x double> %4294, ptr %4298, align 16, !tbaa !25
  %4300 = load <2 x double>, ptr %220, align 16, !tbaa !25
  %4301 = getelementptr inbounds nuw i8, ptr %4298, i64 32
  store <2 x double> %4300, ptr %4299, align 16, !tbaa !25
  %4302 = load <2 x double>, ptr %182, align 16, !tbaa !25
  %4303 = getelementptr inbounds nuw i8, ptr %4298, i64 48
  store <2 x double> %4302, ptr %4301, align 16, !tbaa !25
  %4304 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %4305 = getelementptr inbounds nuw i8, ptr %4298, i64 64
  store <2 x double> %4304, ptr %4303, align 16, !tbaa !25
  %4306 = load i64, ptr %140, align 16, !tbaa !16
  %4307 = icmp sgt i64 %4306, 0
  br i1 %4307, label %4312, label %4308

4308:                                             ; preds = %4312, %4293
  %4309 = phi ptr [ %4305, %4293 ], [ %4318, %4312 ]
  %4310 = load i64, ptr %221, align 8, !tbaa !130
  %4311 = icmp eq i64 %4310, 0
  br i1 %4311, label %4447, label %4322

4312:                                             ; preds = %4293, %4312
  %4313 = phi ptr [ %4318, %4312 ], [ %4305, %4293 ]
  %4314 = phi i64 [ %4319, %4312 ], [ 0, %4293 ]
  %4315 = load ptr, ptr %141, align 8, !tbaa !27
  %4316 = getelementptr inbounds nuw %struct.Piece, ptr %4315, i64 %4314, i32 35
  %4317 = load <2 x double>, ptr %4316, align 16, !tbaa !25
  %4318 = getelementptr inbounds nuw i8, ptr %4313, i64 16
  store <2 x double> %4317, ptr %4313, align 16, !tbaa !25
  %4319 = add nuw nsw i64 %4314, 1
  %4320 = load i64, ptr %140, align 16, !tbaa !16
  %4321 = icmp slt i64 %4319, %4320
  br i1 %4321, label %4312, label %4308, !llvm.loop !131

4322:                                             ; preds = %4308
  %4323 = load <2 x double>, ptr %203, align 16, !tbaa !25
  %4324 = getelementptr inbounds nuw i8, ptr %4309, i64 16
  store <2 x double> %4323, ptr %4309, align 16, !tbaa !25
  %4325 = load <2 x double>, ptr %175, align 16, !tbaa !25
  %4326 = getelementptr inbounds nuw i8, ptr %4309, i64 32
  store <2 x double> %4325, ptr %4324, align 16, !tbaa !25
  %4327 = load <2 x double>, ptr %182, align 16, !tbaa !25
  %4328 = load <2 x double>, ptr %192, align 16, !tbaa !25
  %4329 = fsub <2 x double> %4327, %4328
  %4330 = fcmp ogt <2 x double> %4329, zeroinitializer
  %4331 = select <2 x i1> %4330, <2 x double> %4329, <2 x double> zeroinitializer
  store <2 x double> %4331, ptr %4326, align 16, !tbaa !25
  %4332 = load i64, ptr %140, align 16, !tbaa !16
  %4333 = icmp sgt i64 %4332, 0
  br i1 %4333, label %4334, label %4447

4334:                                             ; preds = %4322
  %4335 = getelementptr inbounds nuw i8, ptr %4309, i64 48
  br label %4336

4336:                                             ; preds = %4334, %4336
  %4337 = phi ptr [ %4443, %4336 ], [ %4335, %4334 ]
  %4338 = phi i64 [ %4444, %4336 ], [ 0, %4334 ]
  %4339 = load ptr, ptr %141, align 8, !tbaa !27
  %4340 = getelementptr inbounds nuw %struct.Piece, ptr %4339, i64 %4338
  %4341 = getelementptr inbounds nuw i8, ptr %4340, i64 1904
  %4342 = load ptr, ptr %4341, align 16, !tbaa !45
  %4343 = load i64, ptr %131, align 8, !tbaa !20
  %4344 = getelementptr <2 x double>, ptr %4342, i64 %4343
  %4345 = getelementptr i8, ptr %4344, i64 -16
  %4346 = load <2 x double>, ptr %4345, align 16, !tbaa !25
  %4347 = getelementptr inbounds nuw i8, ptr %4340, i64 1712
  %4348 = load <2 x double>, ptr %4347, align 16, !tbaa !25
  %4349 = getelementptr inbounds nuw i8, ptr %4340, i64 1392
  %4350 = load <2 x double>, ptr %4349, align 16, !tbaa !25
  %4351 = fsub <2 x double> %4350, %4346
  %4352 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4348, <2 x double> %4351, <2 x double> %4346)
  %4353 = getelementptr inbounds nuw i8, ptr %4337, i64 16
  store <2 x double> %4352, ptr %4337, align 16, !tbaa !25
  %4354 = getelementptr inbounds nuw i8, ptr %4340, i64 1600
  %4355 = load <2 x double>, ptr %4354, align 16, !tbaa !25
  %4356 = getelementptr inbounds nuw i8, ptr %4337, i64 32
  store <2 x double> %4355, ptr %4353, align 16, !tbaa !25
  %4357 = load <2 x double>, ptr %4340, align 16, !tbaa !25
  %4358 = getelementptr inbounds nuw i8, ptr %4340, i64 928
  %4359 = load <2 x double>, ptr %4358, align 16, !tbaa !25
  %4360 = fsub <2 x double> %4357, %4359
  %4361 = getelementptr inbounds nuw i8, ptr %4337, i64 48
  store <2 x double> %4360, ptr %4356, align 16, !tbaa !25
  %4362 = getelementptr inbounds nuw i8, ptr %4340, i64 1008
  %4363 = load <2 x double>, ptr %4362, align 16, !tbaa !25
  %4364 = getelementptr inbounds nuw i8, ptr %4337, i64 64
  store <2 x double> %4363, ptr %4361, align 16, !tbaa !25
  %4365 = getelementptr inbounds nuw i8, ptr %4340, i64 992
  %4366 = load <2 x double>, ptr %4365, align 16, !tbaa !25
  %4367 = getelementptr inbounds nuw i8, ptr %4337, i64 80
  store <2 x double> %4366, ptr %4364, align 16, !tbaa !25
  %4368 = getelementptr inbounds nuw i8, ptr %4340, i64 960
  %4369 = load <2 x double>, ptr %4368, align 16, !tbaa !25
  %4370 = getelementptr inbounds nuw i8, ptr %4337, i64 96
  store <2 x double> %4369, ptr %4367, align 16, !tbaa !25
  %4371 = getelementptr inbounds nuw i8, ptr %4340, i64 1024
  %4372 = load <2 x double>, ptr %4371, align 16, !tbaa !25
  %4373 = getelementptr inbounds nuw i8, ptr %4337, i64 112
  store <2 x double> %4372, ptr %4370, align 16, !tbaa !25
  %4374 = getelementptr inbounds nuw i8, ptr %4340, i64 2024
  %4375 = load i64, ptr %132, align 16, !tbaa !21
  %4376 = sitofp i64 %4375 to double
  %4377 = tail call double @llvm.fmuladd.f64(double %4376, double 7.500000e-01, double -5.000000e-01)
  %4378 = fcmp ogt double %4377, 0.000000e+00
  %4379 = select i1 %4378, double %4377, double 0.000000e+00
  %4380 = fptosi double %4379 to i64
  %4381 = add nsw i64 %4375, -2
  %4382 = tail call i64 @llvm.smin.i64(i64 %4381, i64 %4380)
  %4383 = sitofp i64 %4382 to double
  %4384 = fsub double %4377, %4383
  %4385 = fsub double 1.000000e+00, %4384
  %4386 = insertelement <2 x double> poison, double %4385, i64 0
  %4387 = shufflevector <2 x double> %4386, <2 x double> poison, <2 x i32> zeroinitializer
  %4388 = load ptr, ptr %4374, align 8, !tbaa !49
  %4389 = getelementptr inbounds <2 x double>, ptr %4388, i64 %4382
  %4390 = load <2 x double>, ptr %4389, align 16, !tbaa !25
  %4391 = insertelement <2 x double> poison, double %4384, i64 0
  %4392 = shufflevector <2 x double> %4391, <2 x double> poison, <2 x i32> zeroinitializer
  %4393 = getelementptr i8, ptr %4389, i64 16
  %4394 = load <2 x double>, ptr %4393, align 16, !tbaa !25
  %4395 = fmul <2 x double> %4394, %4392
  %4396 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4387, <2 x double> %4390, <2 x double> %4395)
  store <2 x double> %4396, ptr %4373, align 16, !tbaa !25
  %4397 = load i64, ptr %132, align 16, !tbaa !21
  %4398 = sitofp i64 %4397 to double
  %4399 = tail call double @llvm.fmuladd.f64(double %4398, double 5.000000e-01, double -5.000000e-01)
  %4400 = fcmp ogt double %4399, 0.000000e+00
  %4401 = select i1 %4400, double %4399, double 0.000000e+00
  %4402 = fptosi double %4401 to i64
  %4403 = add nsw i64 %4397, -2
  %4404 = tail call i64 @llvm.smin.i64(i64 %4403, i64 %4402)
  %4405 = sitofp i64 %4404 to double
  %4406 = fsub double %4399, %4405
  %4407 = fsub double 1.000000e+00, %4406
  %4408 = insertelement <2 x double> poison, double %4407, i64 0
  %4409 = shufflevector <2 x double> %4408, <2 x double> poison, <2 x i32> zeroinitializer
  %4410 = load ptr, ptr %4374, align 8, !tbaa !49
  %4411 = getelementptr inbounds <2 x double>, ptr %4410, i64 %4404
  %4412 = load <2 x double>, ptr %4411, align 16, !tbaa !25
  %4413 = insertelement <2 x double> poison, double %4406, i64 0
  %4414 = shufflevector <2 x double> %4413, <2 x double> poison, <2 x i32> zeroinitializer
  %4415 = getelementptr i8, ptr %4411, i64 16
  %4416 = load <2 x double>, ptr %4415, align 16, !tbaa !25
  %4417 = fmul <2 x double> %4416, %4414
  %4418 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4409, <2 x double> %4412, <2 x double> %4417)
  %4419 = getelementptr inbounds nuw i8, ptr %4337, i64 128
  store <2 x double> %4418, ptr %4419, align 16, !tbaa !25
  %4420 = load i64, ptr %132, align 16, !tbaa !21
  %4421 = sitofp i64 %4420 to double
  %4422 = tail call double @llvm.fmuladd.f64(double %4421, double 2.500000e-01, double -5.000000e-01)
  %4423 = fcmp ogt double %4422, 0.000000e+00
  %4424 = select i1 %4423, double %4422, double 0.000000e+00
  %4425 = fptosi double %4424 to i64
  %4426 = add nsw i64 %4420, -2
  %4427 = tail call i64 @llvm.smin.i64(i64 %4426, i64 %4425)
  %4428 = sitofp i64 %4427 to double
  %4429 = fsub double %4422, %4428
  %4430 = fsub double 1.000000e+00, %4429
  %4431 = insertelement <2 x double> poison, double %4430, i64 0
  %4432 = shufflevector <2 x double> %4431, <2 x double> poison, <2 x i32> zeroinitializer
  %4433 = load ptr, ptr %4374, align 8, !tbaa !49
  %4434 = getelementptr inbounds <2 x double>, ptr %4433, i64 %4427
  %4435 = load <2 x double>, ptr %4434, align 16, !tbaa !25
  %4436 = insertelement <2 x double> poison, double %4429, i64 0
  %4437 = shufflevector <2 x double> %4436, <2 x double> poison, <2 x i32> zeroinitializer
  %4438 = getelementptr i8, ptr %4434, i64 16
  %4439 = load <2 x double>, ptr %4438, align 16, !tbaa !25
  %4440 = fmul <2 x double> %4439, %4437
  %4441 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4432, <2 x double> %4435, <2 x double> %4440)
  %4442 = getelementptr inbounds nuw i8, ptr %4337, i64 144
  store <2 x double> %4441, ptr %4442, align 16, !tbaa !25
  %4443 = getelementptr inbounds nuw i8, ptr %4337, i64 160
  %4444 = add nuw nsw i64 %4338, 1
  %4445 = load i64, ptr %140, align 16, !tbaa !16
  %4446 = icmp slt i64 %4444, %4445
  br i1 %4446, label %4336, label %4447, !llvm.loop !132

4447:                                             ; preds = %4336, %4322, %4308
  %4448 = extractelement <2 x i64> %3486, i64 0
  %4449 = icmp eq i64 %4448, 0
  br i1 %4449, label %4516, label %4450

4450:                                             ; preds = %4447
  %4451 = load i64, ptr %222, align 8, !tbaa !29
  %4452 = load i64, ptr %223, align 8, !tbaa !133
  %4453 = icmp eq i64 %4451, %4452
  br i1 %4453, label %4456, label %4454

4454:                                             ; preds = %4450
  %4455 = load ptr, ptr %227, align 8, !tbaa !134
  br label %4469

4456:                                             ; preds = %4450
  %4457 = load i64, ptr %133, align 8, !tbaa !29
  %4458 = load ptr, ptr %224, align 8, !tbaa !135
  %4459 = load i64, ptr %124, align 8, !tbaa !40
  %4460 = getelementptr inbounds i64, ptr %4458, i64 %4459
  store i64 %4457, ptr %4460, align 8, !tbaa !29
  %4461 = load ptr, ptr %225, align 8, !tbaa !136
  %4462 = load i64, ptr %124, align 8, !tbaa !40
  %4463 = add nsw i64 %4462, 1
  store i64 %4463, ptr %124, align 8, !tbaa !40
  %4464 = load i64, ptr %223, align 8, !tbaa !133
  %4465 = mul nsw i64 %4464, %4462
  %4466 = load i64, ptr %226, align 8, !tbaa !15
  %4467 = mul nsw i64 %4465, %4466
  %4468 = getelementptr inbounds double, ptr %4461, i64 %4467
  store ptr %4468, ptr %227, align 8, !tbaa !134
  br label %4469

4469:                                             ; preds = %4454, %4456
  %4470 = phi i64 [ %4451, %4454 ], [ 0, %4456 ]
  %4471 = phi ptr [ %4455, %4454 ], [ %4468, %4456 ]
  %4472 = add nsw i64 %4470, 1
  store i64 %4472, ptr %222, align 8, !tbaa !29
  %4473 = load i64, ptr %226, align 8, !tbaa !15
  %4474 = mul nsw i64 %4473, %4470
  %4475 = getelementptr inbounds double, ptr %4471, i64 %4474
  %4476 = icmp sgt i64 %4473, 0
  br i1 %4476, label %4477, label %4516

4477:                                             ; preds = %4469
  %4478 = load ptr, ptr %219, align 16, !tbaa !37
  %4479 = and i64 %4473, 3
  %4480 = icmp ult i64 %4473, 4
  br i1 %4480, label %4504, label %4481

4481:                                             ; preds = %4477
  %4482 = and i64 %4473, 9223372036854775804
  br label %4483

4483:                                             ; preds = %4483, %4481
  %4484 = phi i64 [ 0, %4481 ], [ %4501, %4483 ]
  %4485 = phi i64 [ 0, %4481 ], [ %4502, %4483 ]
  %4486 = getelementptr inbounds nuw <2 x double>, ptr %4478, i64 %4484
  %4487 = load double, ptr %4486, align 8, !tbaa !41
  %4488 = getelementptr inbounds nuw double, ptr %4475, i64 %4484
  store double %4487, ptr %4488, align 8, !tbaa !41
  %4489 = or disjoint i64 %4484, 1
  %4490 = getelementptr inbounds nuw <2 x double>, ptr %4478, i64 %4489
  %4491 = load double, ptr %4490, align 8, !tbaa !41
  %4492 = getelementptr inbounds nuw double, ptr %4475, i64 %4489
  store double %4491, ptr %4492, align 8, !tbaa !41
  %4493 = or disjoint i64 %4484, 2
  %4494 = getelementptr inbounds nuw <2 x double>, ptr %4478, i64 %4493
  %4495 = load double, ptr %4494, align 8, !tbaa !41
  %4496 = getelementptr inbounds nuw double, ptr %4475, i64 %4493
  store double %4495, ptr %4496, align 8, !tbaa !41
  %4497 = or disjoint i64 %4484, 3
  %4498 = getelementptr inbounds nuw <2 x double>, ptr %4478, i64 %4497
  %4499 = load double, ptr %4498, align 8, !tbaa !41
  %4500 = getelementptr inbounds nuw double, ptr %4475, i64 %4497
  store double %4499, ptr %4500, align 8, !tbaa !41
  %4501 = add nuw nsw i64 %4484, 4
  %4502 = add i64 %4485, 4
  %4503 = icmp eq i64 %4502, %4482
  br i1 %4503, label %4504, label %4483, !llvm.loop !137

4504:                                             ; preds = %4483, %4477
  %4505 = phi i64 [ 0, %4477 ], [ %4501, %4483 ]
  %4506 = icmp eq i64 %4479, 0
  br i1 %4506, label %4516, label %4507

4507:                                             ; preds = %4504, %4507
  %4508 = phi i64 [ %4513, %4507 ], [ %4505, %4504 ]
  %4509 = phi i64 [ %4514, %4507 ], [ 0, %4504 ]
  %4510 = getelementptr inbounds nuw <2 x double>, ptr %4478, i64 %4508
  %4511 = load double, ptr %4510, align 8, !tbaa !41
  %4512 = getelementptr inbounds nuw double, ptr %4475, i64 %4508
  store double %4511, ptr %4512, align 8, !tbaa !41
  %4513 = add nuw nsw i64 %4508, 1
  %4514 = add i64 %4509, 1
  %4515 = icmp eq i64 %4514, %4479
  br i1 %4515, label %4516, label %4507, !llvm.loop !138

4516:                                             ; preds = %4504, %4507, %4469, %4447
  %4517 = extractelement <2 x i64> %3486, i64 1
  %4518 = icmp eq i64 %4517, 0
  br i1 %4518, label %4586, label %4519

4519:                                             ; preds = %4516
  %4520 = load i64, ptr %258, align 8, !tbaa !29
  %4521 = load i64, ptr %223, align 8, !tbaa !133
  %4522 = icmp eq i64 %4520, %4521
  br i1 %4522, label %4525, label %4523

4523:                                             ; preds = %4519
  %4524 = load ptr, ptr %259, align 8, !tbaa !134
  br label %4538

4525:                                             ; preds = %4519
  %4526 = load i64, ptr %260, align 8, !tbaa !29
  %4527 = load ptr, ptr %224, align 8, !tbaa !135
  %4528 = load i64, ptr %124, align 8, !tbaa !40
  %4529 = getelementptr inbounds i64, ptr %4527, i64 %4528
  store i64 %4526, ptr %4529, align 8, !tbaa !29
  %4530 = load ptr, ptr %225, align 8, !tbaa !136
  %4531 = load i64, ptr %124, align 8, !tbaa !40
  %4532 = add nsw i64 %4531, 1
  store i64 %4532, ptr %124, align 8, !tbaa !40
  %4533 = load i64, ptr %223, align 8, !tbaa !133
  %4534 = mul nsw i64 %4533, %4531
  %4535 = load i64, ptr %226, align 8, !tbaa !15
  %4536 = mul nsw i64 %4534, %4535
  %4537 = getelementptr inbounds double, ptr %4530, i64 %4536
  store ptr %4537, ptr %261, align 8, !tbaa !134
  br label %4538

4538:                                             ; preds = %4523, %4525
  %4539 = phi i64 [ %4520, %4523 ], [ 0, %4525 ]
  %4540 = phi ptr [ %4524, %4523 ], [ %4537, %4525 ]
  %4541 = add nsw i64 %4539, 1
  store i64 %4541, ptr %258, align 8, !tbaa !29
  %4542 = load i64, ptr %226, align 8, !tbaa !15
  %4543 = mul nsw i64 %4542, %4539
  %4544 = getelementptr inbounds double, ptr %4540, i64 %4543
  %4545 = icmp sgt i64 %4542, 0
  br i1 %4545, label %4546, label %4586

4546:                                             ; preds = %4538
  %4547 = load ptr, ptr %219, align 16, !tbaa !37
  %4548 = getelementptr inbounds nuw i8, ptr %4547, i64 8
  %4549 = and i64 %4542, 3
  %4550 = icmp ult i64 %4542, 4
  br i1 %4550, label %4574, label %4551

4551:                                             ; preds = %4546
  %4552 = and i64 %4542, 9223372036854775804
  br label %4553

4553:                                             ; preds = %4553, %4551
  %4554 = phi i64 [ 0, %4551 ], [ %4571, %4553 ]
  %4555 = phi i64 [ 0, %4551 ], [ %4572, %4553 ]
  %4556 = getelementptr inbounds nuw <2 x double>, ptr %4548, i64 %4554
  %4557 = load double, ptr %4556, align 8, !tbaa !41
  %4558 = getelementptr inbounds nuw double, ptr %4544, i64 %4554
  store double %4557, ptr %4558, align 8, !tbaa !41
  %4559 = or disjoint i64 %4554, 1
  %4560 = getelementptr inbounds nuw <2 x double>, ptr %4548, i64 %4559
  %4561 = load double, ptr %4560, align 8, !tbaa !41
  %4562 = getelementptr inbounds nuw double, ptr %4544, i64 %4559
  store double %4561, ptr %4562, align 8, !tbaa !41
  %4563 = or disjoint i64 %4554, 2
  %4564 = getelementptr inbounds nuw <2 x double>, ptr %4548, i64 %4563
  %4565 = load double, ptr %4564, align 8, !tbaa !41
  %4566 = getelementptr inbounds nuw double, ptr %4544, i64 %4563
  store double %4565, ptr %4566, align 8, !tbaa !41
  %4567 = or disjoint i64 %4554, 3
  %4568 = getelementptr inbounds nuw <2 x double>, ptr %4548, i64 %4567
  %4569 = load double, ptr %4568, align 8, !tbaa !41
  %4570 = getelementptr inbounds nuw double, ptr %4544, i64 %4567
  store double %4569, ptr %4570, align 8, !tbaa !41
  %4571 = add nuw nsw i64 %4554, 4
  %4572 = add i64 %4555, 4
  %4573 = icmp eq i64 %4572, %4552
  br i1 %4573, label %4574, label %4553, !llvm.loop !137

4574:                                             ; preds = %4553, %4546
  %4575 = phi i64 [ 0, %4546 ], [ %4571, %4553 ]
  %4576 = icmp eq i64 %4549, 0
  br i1 %4576, label %4586, label %4577

4577:                                             ; preds = %4574, %4577
  %4578 = phi i64 [ %4583, %4577 ], [ %4575, %4574 ]
  %4579 = phi i64 [ %4584, %4577 ], [ 0, %4574 ]
  %4580 = getelementptr inbounds nuw <2 x double>, ptr %4548, i64 %4578
  %4581 = load double, ptr %4580, align 8, !tbaa !41
  %4582 = getelementptr inbounds nuw double, ptr %4544, i64 %4578
  store double %4581, ptr %4582, align 8, !tbaa !41
  %4583 = add nuw nsw i64 %4578, 1
  %4584 = add i64 %4579, 1
  %4585 = icmp eq i64 %4584, %4549
  br i1 %4585, label %4586, label %4577, !llvm.loop !139

4586:                                             ; preds = %4574, %4577, %4538, %4516
  %4587 = load <2 x double>, ptr %150, align 16, !tbaa !25
  %4588 = load <2 x double>, ptr %152, align 16, !tbaa !25
  %4589 = fsub <2 x double> %4587, %4588
  %4590 = load <2 x double>, ptr %153, align 16, !tbaa !25
  %4591 = fadd <2 x double> %4590, splat (double -1.000000e-09)
  %4592 = fcmp oge <2 x double> %4589, %4591
  %4593 = select <2 x i1> %4592, <2 x i64> %3486, <2 x i64> zeroinitializer
  %4594 = load i64, ptr %140, align 16, !tbaa !16
  %4595 = icmp sgt i64 %4594, 0
  br i1 %4595, label %4596, label %4644

4596:                                             ; preds = %4586
  %4597 = load ptr, ptr %141, align 8, !tbaa !27
  %4598 = and i64 %4594, 3
  %4599 = icmp ult i64 %4594, 4
  br i1 %4599, label %4628, label %4600

4600:                                             ; preds = %4596
  %4601 = and i64 %4594, 9223372036854775804
  br label %4602

4602:                                             ; preds = %4602, %4600
  %4603 = phi i64 [ 0, %4600 ], [ %4625, %4602 ]
  %4604 = phi <2 x double> [ splat (double 1.000000e+09), %4600 ], [ %4624, %4602 ]
  %4605 = phi i64 [ 0, %4600 ], [ %4626, %4602 ]
  %4606 = getelementptr inbounds nuw %struct.Piece, ptr %4597, i64 %4603, i32 35
  %4607 = load <2 x double>, ptr %4606, align 16, !tbaa !25
  %4608 = fcmp olt <2 x double> %4604, %4607
  %4609 = select <2 x i1> %4608, <2 x double> %4604, <2 x double> %4607
  %4610 = or disjoint i64 %4603, 1
  %4611 = getelementptr inbounds nuw %struct.Piece, ptr %4597, i64 %4610, i32 35
  %4612 = load <2 x double>, ptr %4611, align 16, !tbaa !25
  %4613 = fcmp olt <2 x double> %4609, %4612
  %4614 = select <2 x i1> %4613, <2 x double> %4609, <2 x double> %4612
  %4615 = or disjoint i64 %4603, 2
  %4616 = getelementptr inbounds nuw %struct.Piece, ptr %4597, i64 %4615, i32 35
  %4617 = load <2 x double>, ptr %4616, align 16, !tbaa !25
  %4618 = fcmp olt <2 x double> %4614, %4617
  %4619 = select <2 x i1> %4618, <2 x double> %4614, <2 x double> %4617
  %4620 = or disjoint i64 %4603, 3
  %4621 = getelementptr inbounds nuw %struct.Piece, ptr %4597, i64 %4620, i32 35
  %4622 = load <2 x double>, ptr %4621, align 16, !tbaa !25
  %4623 = fcmp olt <2 x double> %4619, %4622
  %4624 = select <2 x i1> %4623, <2 x double> %4619, <2 x double> %4622
  %4625 = add nuw nsw i64 %4603, 4
  %4626 = add i64 %4605, 4
  %4627 = icmp eq i64 %4626, %4601
  br i1 %4627, label %4628, label %4602, !llvm.loop !113

4628:                                             ; preds = %4602, %4596
  %4629 = phi <2 x double> [ poison, %4596 ], [ %4624, %4602 ]
  %4630 = phi i64 [ 0, %4596 ], [ %4625, %4602 ]
  %4631 = phi <2 x double> [ splat (double 1.000000e+09), %4596 ], [ %4624, %4602 ]
  %4632 = icmp eq i64 %4598, 0
  br i1 %4632, label %4644, label %4633

4633:                                             ; preds = %4628, %4633
  %4634 = phi i64 [ %4641, %4633 ], [ %4630, %4628 ]
  %4635 = phi <2 x double> [ %4640, %4633 ], [ %4631, %4628 ]
  %4636 = phi i64 [ %4642, %4633 ], [ 0, %4628 ]
  %4637 = getelementptr inbounds nuw %struct.Piece, ptr %4597, i64 %4634, i32 35
  %4638 = load <2 x double>, ptr %4637, align 16, !tbaa !25
  %4639 = fcmp olt <2 x double> %4635, %4638
  %4640 = select <2 x i1> %4639, <2 x double> %4635, <2 x double> %4638
  %4641 = add nuw nsw i64 %4634, 1
  %4642 = add i64 %4636, 1
  %4643 = icmp eq i64 %4642, %4598
  br i1 %4643, label %4644, label %4633, !llvm.loop !140

4644:                                             ; preds = %4628, %4633, %4586
  %4645 = phi <2 x double> [ splat (double 1.000000e+09), %4586 ], [ %4629, %4628 ], [ %4640, %4633 ]
  %4646 = load <2 x double>, ptr %215, align 16, !tbaa !25
  %4647 = select <2 x i1> %3546, <2 x double> %4646, <2 x double> %4645
  store <2 x double> %4647, ptr %215, align 16, !tbaa !25
  %4648 = load <2 x double>, ptr %216, align 16, !tbaa !25
  %4649 = fcmp une <2 x double> %4648, zeroinitializer
  %4650 = load <2 x double>, ptr %182, align 16, !tbaa !25
  %4651 = load <2 x double>, ptr %173, align 16, !tbaa !25
  %4652 = fsub <2 x double> %4650, %4651
  %4653 = fcmp une <2 x double> %4648, splat (double 1.000000e+00)
  %4654 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %4655 = load <2 x double>, ptr %217, align 16, !tbaa !25
  %4656 = fsub <2 x double> %4654, %4655
  %4657 = select <2 x i1> %4653, <2 x double> splat (double -1.000000e+00), <2 x double> %4656
  %4658 = fcmp une <2 x double> %4648, splat (double 2.000000e+00)
  %4659 = fsub <2 x double> %4647, %4655
  %4660 = select <2 x i1> %4658, <2 x double> %4657, <2 x double> %4659
  %4661 = fcmp une <2 x double> %4648, splat (double 3.000000e+00)
  %4662 = fsub <2 x double> %4652, %4655
  %4663 = select <2 x i1> %4661, <2 x double> %4660, <2 x double> %4662
  %4664 = fcmp une <2 x double> %4648, splat (double 4.000000e+00)
  %4665 = fsub <2 x double> %4655, %4652
  %4666 = select <2 x i1> %4664, <2 x double> %4663, <2 x double> %4665
  %4667 = fcmp oge <2 x double> %4666, splat (double 0xBEB0C6F7A0B5ED8D)
  %4668 = select <2 x i1> %4667, <2 x i1> %4649, <2 x i1> zeroinitializer
  %4669 = select <2 x i1> %4668, <2 x i64> %3486, <2 x i64> zeroinitializer
  %4670 = xor <2 x i64> %4669, splat (i64 -1)
  %4671 = and <2 x i64> %4593, %4670
  %4672 = load <2 x double>, ptr %138, align 16, !tbaa !25
  %4673 = icmp ne <2 x i64> %4671, zeroinitializer
  %4674 = select <2 x i1> %4649, <2 x i1> %4673, <2 x i1> zeroinitializer
  %4675 = select <2 x i1> %4674, <2 x double> splat (double 2.000000e+00), <2 x double> %4672
  store <2 x double> %4675, ptr %138, align 16, !tbaa !25
  %4676 = or <2 x i64> %4669, %4593
  %4677 = load <2 x double>, ptr %220, align 16, !tbaa !25
  %4678 = fadd <2 x double> %4677, splat (double 1.000000e+00)
  %4679 = icmp eq <2 x i64> %4676, zeroinitializer
  %4680 = select <2 x i1> %4679, <2 x double> %4677, <2 x double> %4678
  store <2 x double> %4680, ptr %220, align 16, !tbaa !25
  %4681 = xor <2 x i64> %4676, %3486
  %4682 = load <2 x double>, ptr %164, align 16, !tbaa !25
  %4683 = fcmp oeq <2 x double> %4682, zeroinitializer
  %4684 = load <2 x double>, ptr %196, align 16, !tbaa !25
  %4685 = fcmp oeq <2 x double> %4684, zeroinitializer
  %4686 = select <2 x i1> %4685, <2 x i1> %4683, <2 x i1> zeroinitializer
  %4687 = select <2 x i1> %4686, <2 x i64> %4681, <2 x i64> zeroinitializer
  %4688 = load <2 x double>, ptr %214, align 16, !tbaa !25
  %4689 = fmul <2 x double> %4688, splat (double 5.000000e-01)
  %4690 = load <2 x double>, ptr %197, align 16, !tbaa !25
  %4691 = fadd <2 x double> %4690, %4689
  %4692 = fadd <2 x double> %4691, splat (double -1.000000e-03)
  %4693 = fcmp ult <2 x double> %4654, %4692
  %4694 = fsub <2 x double> %4690, %4689
  %4695 = fadd <2 x double> %4694, splat (double 1.000000e-03)
  %4696 = fcmp ole <2 x double> %4654, %4695
  %4697 = load <2 x i64>, ptr %199, align 16, !tbaa !25
  %4698 = select <2 x i1> %4696, <2 x i64> splat (i64 -1), <2 x i64> %4697
  %4699 = select <2 x i1> %4693, <2 x i64> %4698, <2 x i64> zeroinitializer
  %4700 = xor <2 x i64> %4699, %4697
  %4701 = and <2 x i64> %4700, %4687
  %4702 = and <2 x i64> %4699, %4687
  %4703 = xor <2 x i64> %4687, splat (i64 -1)
  %4704 = and <2 x i64> %4697, %4703
  %4705 = or disjoint <2 x i64> %4702, %4704
  store <2 x i64> %4705, ptr %199, align 16, !tbaa !25
  %4706 = load <2 x i64>, ptr %157, align 16, !tbaa !25
  %4707 = or <2 x i64> %4701, %4706
  store <2 x i64> %4707, ptr %157, align 16, !tbaa !25
  %4708 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4676)
  %4709 = icmp eq i64 %4708, 0
  br i1 %4709, label %4720, label %4710

4710:                                             ; preds = %4644
  %4711 = extractelement <2 x i64> %4676, i64 0
  %4712 = icmp eq i64 %4711, 0
  br i1 %4712, label %4714, label %4713

4713:                                             ; preds = %4710
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %4714

4714:                                             ; preds = %4713, %4710
  %4715 = extractelement <2 x i64> %4676, i64 1
  %4716 = icmp eq i64 %4715, 0
  br i1 %4716, label %4718, label %4717

4717:                                             ; preds = %4714
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1520) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %4718

4718:                                             ; preds = %4717, %4714
  %4719 = load <2 x double>, ptr %138, align 16, !tbaa !25
  br label %4720

4720:                                             ; preds = %4718, %4644
  %4721 = phi <2 x double> [ %4719, %4718 ], [ %4675, %4644 ]
  %4722 = load <2 x double>, ptr %135, align 16, !tbaa !25
  %4723 = load <2 x double>, ptr %228, align 16, !tbaa !25
  %4724 = fadd <2 x double> %4723, splat (double -1.000000e+00)
  %4725 = fcmp oge <2 x double> %4722, %4724
  %4726 = select <2 x i1> %4725, <2 x i64> %3486, <2 x i64> zeroinitializer
  %4727 = icmp eq <2 x i64> %4726, zeroinitializer
  %4728 = select <2 x i1> %4727, <2 x double> %4721, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %4728, ptr %138, align 16, !tbaa !25
  %4729 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4726)
  %4730 = icmp eq i64 %4729, 0
  br i1 %4730, label %525, label %4731

4731:                                             ; preds = %4720
  %4732 = extractelement <2 x i64> %4726, i64 0
  %4733 = icmp eq i64 %4732, 0
  br i1 %4733, label %4735, label %4734

4734:                                             ; preds = %4731
  store double 1.000000e+00, ptr %130, align 8, !tbaa !41
  br label %4735

4735:                                             ; preds = %4734, %4731
  %4736 = extractelement <2 x i64> %4726, i64 1
  %4737 = icmp eq i64 %4736, 0
  br i1 %4737, label %525, label %4738

4738:                                             ; preds = %4735
  store double 1.000000e+00, ptr %262, align 8, !tbaa !41
  br label %525

4739:                                             ; preds = %525, %530, %121
  %4740 = phi i64 [ 0, %121 ], [ 1, %530 ], [ 0, %525 ]
  ret i64 %4740
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1520) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 608
  %6 = load i64, ptr %5, align 16, !tbaa !26
  %7 = add nsw i64 %6, 1
  store i64 %7, ptr %5, align 16, !tbaa !26
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1520) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %6) #7
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !25
  %8 = zext nneg i32 %2 to i64
  %9 = getelementptr inbounds nuw i64, ptr %4, i64 %8
  store i64 -1, ptr %9, align 8, !tbaa !29
  %10 = load <2 x i64>, ptr %4, align 16, !tbaa !25
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %12 = load ptr, ptr %11, align 16, !tbaa !37
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %14 = load <2 x double>, ptr %13, align 16, !tbaa !25
  %15 = getelementptr inbounds nuw i8, ptr %12, i64 16
  store <2 x double> %14, ptr %12, align 16, !tbaa !25
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %17 = load <2 x double>, ptr %16, align 16, !tbaa !25
  %18 = getelementptr inbounds nuw i8, ptr %12, i64 32
  store <2 x double> %17, ptr %15, align 16, !tbaa !25
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 736
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %21 = load <2 x double>, ptr %20, align 16, !tbaa !25
  %22 = getelementptr inbounds nuw i8, ptr %12, i64 48
  store <2 x double> %21, ptr %18, align 16, !tbaa !25
  %23 = load <2 x double>, ptr %19, align 16, !tbaa !25
  %24 = getelementptr inbounds nuw i8, ptr %12, i64 64
  store <2 x double> %23, ptr %22, align 16, !tbaa !25
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %26 = load i64, ptr %25, align 16, !tbaa !16
  %27 = icmp sgt i64 %26, 0
  br i1 %27, label %28, label %30

28:                                               ; preds = %3
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 1512
  br label %35

30:                                               ; preds = %35, %3
  %31 = phi ptr [ %24, %3 ], [ %41, %35 ]
  %32 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %33 = load i64, ptr %32, align 8, !tbaa !130
  %34 = icmp eq i64 %33, 0
  br i1 %34, label %176, label %45

35:                                               ; preds = %28, %35
  %36 = phi ptr [ %24, %28 ], [ %41, %35 ]
  %37 = phi i64 [ 0, %28 ], [ %42, %35 ]
  %38 = load ptr, ptr %29, align 8, !tbaa !27
  %39 = getelementptr inbounds nuw %struct.Piece, ptr %38, i64 %37, i32 35
  %40 = load <2 x double>, ptr %39, align 16, !tbaa !25
  %41 = getelementptr inbounds nuw i8, ptr %36, i64 16
  store <2 x double> %40, ptr %36, align 16, !tbaa !25
  %42 = add nuw nsw i64 %37, 1
  %43 = load i64, ptr %25, align 16, !tbaa !16
  %44 = icmp slt i64 %42, %43
  br i1 %44, label %35, label %30, !llvm.loop !131

45:                                               ; preds = %30
  %46 = getelementptr inbounds nuw i8, ptr %0, i64 800
  %47 = load <2 x double>, ptr %46, align 16, !tbaa !25
  %48 = getelementptr inbounds nuw i8, ptr %31, i64 16
  store <2 x double> %47, ptr %31, align 16, !tbaa !25
  %49 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %50 = load <2 x double>, ptr %49, align 16, !tbaa !25
  %51 = getelementptr inbounds nuw i8, ptr %31, i64 32
  store <2 x double> %50, ptr %48, align 16, !tbaa !25
  %52 = load <2 x double>, ptr %20, align 16, !tbaa !25
  %53 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %54 = load <2 x double>, ptr %53, align 16, !tbaa !25
  %55 = fsub <2 x double> %52, %54
  %56 = fcmp ogt <2 x double> %55, zeroinitializer
  %57 = select <2 x i1> %56, <2 x double> %55, <2 x double> zeroinitializer
  store <2 x double> %57, ptr %51, align 16, !tbaa !25
  %58 = load i64, ptr %25, align 16, !tbaa !16
  %59 = icmp sgt i64 %58, 0
  br i1 %59, label %60, label %176

60:                                               ; preds = %45
  %61 = getelementptr inbounds nuw i8, ptr %31, i64 48
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 1512
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 584
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 592
  br label %65

65:                                               ; preds = %60, %65
  %66 = phi ptr [ %61, %60 ], [ %172, %65 ]
  %67 = phi i64 [ 0, %60 ], [ %173, %65 ]
  %68 = load ptr, ptr %62, align 8, !tbaa !27
  %69 = getelementptr inbounds nuw %struct.Piece, ptr %68, i64 %67
  %70 = getelementptr inbounds nuw i8, ptr %69, i64 1904
  %71 = load ptr, ptr %70, align 16, !tbaa !45
  %72 = load i64, ptr %63, align 8, !tbaa !20
  %73 = getelementptr <2 x double>, ptr %71, i64 %72
  %74 = getelementptr i8, ptr %73, i64 -16
  %75 = load <2 x double>, ptr %74, align 16, !tbaa !25
  %76 = getelementptr inbounds nuw i8, ptr %69, i64 1712
  %77 = load <2 x double>, ptr %76, align 16, !tbaa !25
  %78 = getelementptr inbounds nuw i8, ptr %69, i64 1392
  %79 = load <2 x double>, ptr %78, align 16, !tbaa !25
  %80 = fsub <2 x double> %79, %75
  %81 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %77, <2 x double> %80, <2 x double> %75)
  %82 = getelementptr inbounds nuw i8, ptr %66, i64 16
  store <2 x double> %81, ptr %66, align 16, !tbaa !25
  %83 = getelementptr inbounds nuw i8, ptr %69, i64 1600
  %84 = load <2 x double>, ptr %83, align 16, !tbaa !25
  %85 = getelementptr inbounds nuw i8, ptr %66, i64 32
  store <2 x double> %84, ptr %82, align 16, !tbaa !25
  %86 = load <2 x double>, ptr %69, align 16, !tbaa !25
  %87 = getelementptr inbounds nuw i8, ptr %69, i64 928
  %88 = load <2 x double>, ptr %87, align 16, !tbaa !25
  %89 = fsub <2 x double> %86, %88
  %90 = getelementptr inbounds nuw i8, ptr %66, i64 48
  store <2 x double> %89, ptr %85, align 16, !tbaa !25
  %91 = getelementptr inbounds nuw i8, ptr %69, i64 1008
  %92 = load <2 x double>, ptr %91, align 16, !tbaa !25
  %93 = getelementptr inbounds nuw i8, ptr %66, i64 64
  store <2 x double> %92, ptr %90, align 16, !tbaa !25
  %94 = getelementptr inbounds nuw i8, ptr %69, i64 992
  %95 = load <2 x double>, ptr %94, align 16, !tbaa !25
  %96 = getelementptr inbounds nuw i8, ptr %66, i64 80
  store <2 x double> %95, ptr %93, align 16, !tbaa !25
  %97 = getelementptr inbounds nuw i8, ptr %69, i64 960
  %98 = load <2 x double>, ptr %97, align 16, !tbaa !25
  %99 = getelementptr inbounds nuw i8, ptr %66, i64 96
  store <2 x double> %98, ptr %96, align 16, !tbaa !25
  %100 = getelementptr inbounds nuw i8, ptr %69, i64 1024
  %101 = load <2 x double>, ptr %100, align 16, !tbaa !25
  %102 = getelementptr inbounds nuw i8, ptr %66, i64 112
  store <2 x double> %101, ptr %99, align 16, !tbaa !25
  %103 = getelementptr inbounds nuw i8, ptr %69, i64 2024
  %104 = load i64, ptr %64, align 16, !tbaa !21
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
  %115 = insertelement <2 x double> poison, double %114, i64 0
  %116 = shufflevector <2 x double> %115, <2 x double> poison, <2 x i32> zeroinitializer
  %117 = load ptr, ptr %103, align 8, !tbaa !49
  %118 = getelementptr inbounds <2 x double>, ptr %117, i64 %111
  %119 = load <2 x double>, ptr %118, align 16, !tbaa !25
  %120 = insertelement <2 x double> poison, double %113, i64 0
  %121 = shufflevector <2 x double> %120, <2 x double> poison, <2 x i32> zeroinitializer
  %122 = getelementptr i8, ptr %118, i64 16
  %123 = load <2 x double>, ptr %122, align 16, !tbaa !25
  %124 = fmul <2 x double> %123, %121
  %125 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %116, <2 x double> %119, <2 x double> %124)
  store <2 x double> %125, ptr %102, align 16, !tbaa !25
  %126 = load i64, ptr %64, align 16, !tbaa !21
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
  %137 = insertelement <2 x double> poison, double %136, i64 0
  %138 = shufflevector <2 x double> %137, <2 x double> poison, <2 x i32> zeroinitializer
  %139 = load ptr, ptr %103, align 8, !tbaa !49
  %140 = getelementptr inbounds <2 x double>, ptr %139, i64 %133
  %141 = load <2 x double>, ptr %140, align 16, !tbaa !25
  %142 = insertelement <2 x double> poison, double %135, i64 0
  %143 = shufflevector <2 x double> %142, <2 x double> poison, <2 x i32> zeroinitializer
  %144 = getelementptr i8, ptr %140, i64 16
  %145 = load <2 x double>, ptr %144, align 16, !tbaa !25
  %146 = fmul <2 x double> %145, %143
  %147 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %138, <2 x double> %141, <2 x double> %146)
  %148 = getelementptr inbounds nuw i8, ptr %66, i64 128
  store <2 x double> %147, ptr %148, align 16, !tbaa !25
  %149 = load i64, ptr %64, align 16, !tbaa !21
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
  %160 = insertelement <2 x double> poison, double %159, i64 0
  %161 = shufflevector <2 x double> %160, <2 x double> poison, <2 x i32> zeroinitializer
  %162 = load ptr, ptr %103, align 8, !tbaa !49
  %163 = getelementptr inbounds <2 x double>, ptr %162, i64 %156
  %164 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %165 = insertelement <2 x double> poison, double %158, i64 0
  %166 = shufflevector <2 x double> %165, <2 x double> poison, <2 x i32> zeroinitializer
  %167 = getelementptr i8, ptr %163, i64 16
  %168 = load <2 x double>, ptr %167, align 16, !tbaa !25
  %169 = fmul <2 x double> %168, %166
  %170 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %161, <2 x double> %164, <2 x double> %169)
  %171 = getelementptr inbounds nuw i8, ptr %66, i64 144
  store <2 x double> %170, ptr %171, align 16, !tbaa !25
  %172 = getelementptr inbounds nuw i8, ptr %66, i64 160
  %173 = add nuw nsw i64 %67, 1
  %174 = load i64, ptr %25, align 16, !tbaa !16
  %175 = icmp slt i64 %173, %174
  br i1 %175, label %65, label %176, !llvm.loop !132

176:                                              ; preds = %65, %45, %30
  %177 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %179 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %181 = load ptr, ptr %180, align 8
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %185 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %186 = load ptr, ptr %11, align 16
  %187 = extractelement <2 x i64> %10, i64 0
  %188 = icmp eq i64 %187, 0
  br i1 %188, label %253, label %189

189:                                              ; preds = %176
  %190 = load i64, ptr %177, align 16, !tbaa !29
  %191 = load i64, ptr %178, align 8, !tbaa !133
  %192 = icmp eq i64 %190, %191
  br i1 %192, label %195, label %193

193:                                              ; preds = %189
  %194 = load ptr, ptr %185, align 16, !tbaa !134
  br label %207

195:                                              ; preds = %189
  %196 = load i64, ptr %179, align 16, !tbaa !29
  %197 = load i64, ptr %182, align 8, !tbaa !40
  %198 = getelementptr inbounds i64, ptr %181, i64 %197
  store i64 %196, ptr %198, align 8, !tbaa !29
  %199 = load ptr, ptr %183, align 8, !tbaa !136
  %200 = load i64, ptr %182, align 8, !tbaa !40
  %201 = add nsw i64 %200, 1
  store i64 %201, ptr %182, align 8, !tbaa !40
  %202 = load i64, ptr %178, align 8, !tbaa !133
  %203 = mul nsw i64 %202, %200
  %204 = load i64, ptr %184, align 8, !tbaa !15
  %205 = mul nsw i64 %203, %204
  %206 = getelementptr inbounds double, ptr %199, i64 %205
  store ptr %206, ptr %185, align 16, !tbaa !134
  br label %207

207:                                              ; preds = %193, %195
  %208 = phi i64 [ %190, %193 ], [ 0, %195 ]
  %209 = phi ptr [ %194, %193 ], [ %206, %195 ]
  %210 = add nsw i64 %208, 1
  store i64 %210, ptr %177, align 16, !tbaa !29
  %211 = load i64, ptr %184, align 8, !tbaa !15
  %212 = mul nsw i64 %211, %208
  %213 = getelementptr inbounds double, ptr %209, i64 %212
  %214 = icmp sgt i64 %211, 0
  br i1 %214, label %215, label %253

215:                                              ; preds = %207
  %216 = and i64 %211, 3
  %217 = icmp ult i64 %211, 4
  br i1 %217, label %241, label %218

218:                                              ; preds = %215
  %219 = and i64 %211, 9223372036854775804
  br label %220

220:                                              ; preds = %220, %218
  %221 = phi i64 [ 0, %218 ], [ %238, %220 ]
  %222 = phi i64 [ 0, %218 ], [ %239, %220 ]
  %223 = getelementptr inbounds nuw <2 x double>, ptr %186, i64 %221
  %224 = load double, ptr %223, align 8, !tbaa !41
  %225 = getelementptr inbounds nuw double, ptr %213, i64 %221
  store double %224, ptr %225, align 8, !tbaa !41
  %226 = or disjoint i64 %221, 1
  %227 = getelementptr inbounds nuw <2 x double>, ptr %186, i64 %226
  %228 = load double, ptr %227, align 8, !tbaa !41
  %229 = getelementptr inbounds nuw double, ptr %213, i64 %226
  store double %228, ptr %229, align 8, !tbaa !41
  %230 = or disjoint i64 %221, 2
  %231 = getelementptr inbounds nuw <2 x double>, ptr %186, i64 %230
  %232 = load double, ptr %231, align 8, !tbaa !41
  %233 = getelementptr inbounds nuw double, ptr %213, i64 %230
  store double %232, ptr %233, align 8, !tbaa !41
  %234 = or disjoint i64 %221, 3
  %235 = getelementptr inbounds nuw <2 x double>, ptr %186, i64 %234
  %236 = load double, ptr %235, align 8, !tbaa !41
  %237 = getelementptr inbounds nuw double, ptr %213, i64 %234
  store double %236, ptr %237, align 8, !tbaa !41
  %238 = add nuw nsw i64 %221, 4
  %239 = add i64 %222, 4
  %240 = icmp eq i64 %239, %219
  br i1 %240, label %241, label %220, !llvm.loop !137

241:                                              ; preds = %220, %215
  %242 = phi i64 [ 0, %215 ], [ %238, %220 ]
  %243 = icmp eq i64 %216, 0
  br i1 %243, label %253, label %244

244:                                              ; preds = %241, %244
  %245 = phi i64 [ %250, %244 ], [ %242, %241 ]
  %246 = phi i64 [ %251, %244 ], [ 0, %241 ]
  %247 = getelementptr inbounds nuw <2 x double>, ptr %186, i64 %245
  %248 = load double, ptr %247, align 8, !tbaa !41
  %249 = getelementptr inbounds nuw double, ptr %213, i64 %245
  store double %248, ptr %249, align 8, !tbaa !41
  %250 = add nuw nsw i64 %245, 1
  %251 = add i64 %246, 1
  %252 = icmp eq i64 %251, %216
  br i1 %252, label %253, label %244, !llvm.loop !141

253:                                              ; preds = %241, %244, %207, %176
  %254 = extractelement <2 x i64> %10, i64 1
  %255 = icmp eq i64 %254, 0
  br i1 %255, label %325, label %256

256:                                              ; preds = %253
  %257 = getelementptr inbounds nuw i8, ptr %0, i64 1432
  %258 = load i64, ptr %257, align 8, !tbaa !29
  %259 = load i64, ptr %178, align 8, !tbaa !133
  %260 = icmp eq i64 %258, %259
  br i1 %260, label %264, label %261

261:                                              ; preds = %256
  %262 = getelementptr inbounds nuw i8, ptr %0, i64 1480
  %263 = load ptr, ptr %262, align 8, !tbaa !134
  br label %278

264:                                              ; preds = %256
  %265 = getelementptr inbounds nuw i8, ptr %0, i64 1416
  %266 = load i64, ptr %265, align 8, !tbaa !29
  %267 = load i64, ptr %182, align 8, !tbaa !40
  %268 = getelementptr inbounds i64, ptr %181, i64 %267
  store i64 %266, ptr %268, align 8, !tbaa !29
  %269 = load ptr, ptr %183, align 8, !tbaa !136
  %270 = load i64, ptr %182, align 8, !tbaa !40
  %271 = add nsw i64 %270, 1
  store i64 %271, ptr %182, align 8, !tbaa !40
  %272 = load i64, ptr %178, align 8, !tbaa !133
  %273 = mul nsw i64 %272, %270
  %274 = load i64, ptr %184, align 8, !tbaa !15
  %275 = mul nsw i64 %273, %274
  %276 = getelementptr inbounds double, ptr %269, i64 %275
  %277 = getelementptr inbounds nuw i8, ptr %0, i64 1480
  store ptr %276, ptr %277, align 8, !tbaa !134
  br label %278

278:                                              ; preds = %261, %264
  %279 = phi i64 [ %258, %261 ], [ 0, %264 ]
  %280 = phi ptr [ %263, %261 ], [ %276, %264 ]
  %281 = add nsw i64 %279, 1
  store i64 %281, ptr %257, align 8, !tbaa !29
  %282 = load i64, ptr %184, align 8, !tbaa !15
  %283 = mul nsw i64 %282, %279
  %284 = getelementptr inbounds double, ptr %280, i64 %283
  %285 = icmp sgt i64 %282, 0
  br i1 %285, label %286, label %325

286:                                              ; preds = %278
  %287 = getelementptr inbounds nuw i8, ptr %186, i64 8
  %288 = and i64 %282, 3
  %289 = icmp ult i64 %282, 4
  br i1 %289, label %313, label %290

290:                                              ; preds = %286
  %291 = and i64 %282, 9223372036854775804
  br label %292

292:                                              ; preds = %292, %290
  %293 = phi i64 [ 0, %290 ], [ %310, %292 ]
  %294 = phi i64 [ 0, %290 ], [ %311, %292 ]
  %295 = getelementptr inbounds nuw <2 x double>, ptr %287, i64 %293
  %296 = load double, ptr %295, align 8, !tbaa !41
  %297 = getelementptr inbounds nuw double, ptr %284, i64 %293
  store double %296, ptr %297, align 8, !tbaa !41
  %298 = or disjoint i64 %293, 1
  %299 = getelementptr inbounds nuw <2 x double>, ptr %287, i64 %298
  %300 = load double, ptr %299, align 8, !tbaa !41
  %301 = getelementptr inbounds nuw double, ptr %284, i64 %298
  store double %300, ptr %301, align 8, !tbaa !41
  %302 = or disjoint i64 %293, 2
  %303 = getelementptr inbounds nuw <2 x double>, ptr %287, i64 %302
  %304 = load double, ptr %303, align 8, !tbaa !41
  %305 = getelementptr inbounds nuw double, ptr %284, i64 %302
  store double %304, ptr %305, align 8, !tbaa !41
  %306 = or disjoint i64 %293, 3
  %307 = getelementptr inbounds nuw <2 x double>, ptr %287, i64 %306
  %308 = load double, ptr %307, align 8, !tbaa !41
  %309 = getelementptr inbounds nuw double, ptr %284, i64 %306
  store double %308, ptr %309, align 8, !tbaa !41
  %310 = add nuw nsw i64 %293, 4
  %311 = add i64 %294, 4
  %312 = icmp eq i64 %311, %291
  br i1 %312, label %313, label %292, !llvm.loop !137

313:                                              ; preds = %292, %286
  %314 = phi i64 [ 0, %286 ], [ %310, %292 ]
  %315 = icmp eq i64 %288, 0
  br i1 %315, label %325, label %316

316:                                              ; preds = %313, %316
  %317 = phi i64 [ %322, %316 ], [ %314, %313 ]
  %318 = phi i64 [ %323, %316 ], [ 0, %313 ]
  %319 = getelementptr inbounds nuw <2 x double>, ptr %287, i64 %317
  %320 = load double, ptr %319, align 8, !tbaa !41
  %321 = getelementptr inbounds nuw double, ptr %284, i64 %317
  store double %320, ptr %321, align 8, !tbaa !41
  %322 = add nuw nsw i64 %317, 1
  %323 = add i64 %318, 1
  %324 = icmp eq i64 %323, %288
  br i1 %324, label %325, label %316, !llvm.loop !142

325:                                              ; preds = %313, %316, %278, %253
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1520) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %6 = zext nneg i32 %2 to i64
  %7 = getelementptr inbounds nuw [2 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !29
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !133
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %11 = getelementptr inbounds nuw [2 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !29
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %13 = shl nuw nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = zext nneg i32 %14 to i64
  %16 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !29
  %17 = zext nneg i32 %13 to i64
  %18 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !29
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %20 = getelementptr inbounds nuw [2 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !41
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !143
  %23 = mul i64 %3, 288
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr inbounds nuw double, ptr %0, i64 %6
  br label %41

26:                                               ; preds = %41
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %28 = load i64, ptr %27, align 16, !tbaa !16
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %60

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 1512
  %32 = load ptr, ptr %31, align 8, !tbaa !27
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 584
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %36 = load ptr, ptr %35, align 8, !tbaa !144
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %38 = load ptr, ptr %37, align 8, !tbaa !145
  %39 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %40 = load ptr, ptr %39, align 8, !tbaa !146
  br label %151

41:                                               ; preds = %41, %4
  %42 = phi i64 [ 0, %4 ], [ %58, %41 ]
  %43 = getelementptr double, ptr %24, i64 %42
  %44 = load double, ptr %43, align 8, !tbaa !41
  %45 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %42
  store double %44, ptr %45, align 8, !tbaa !41
  %46 = or disjoint i64 %42, 1
  %47 = getelementptr double, ptr %24, i64 %46
  %48 = load double, ptr %47, align 8, !tbaa !41
  %49 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %46
  store double %48, ptr %49, align 8, !tbaa !41
  %50 = or disjoint i64 %42, 2
  %51 = getelementptr double, ptr %24, i64 %50
  %52 = load double, ptr %51, align 8, !tbaa !41
  %53 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %50
  store double %52, ptr %53, align 8, !tbaa !41
  %54 = or disjoint i64 %42, 3
  %55 = getelementptr double, ptr %24, i64 %54
  %56 = load double, ptr %55, align 8, !tbaa !41
  %57 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %54
  store double %56, ptr %57, align 8, !tbaa !41
  %58 = add nuw nsw i64 %42, 4
  %59 = icmp eq i64 %58, 36
  br i1 %59, label %26, label %41, !llvm.loop !147

60:                                               ; preds = %530, %26
  %61 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 736
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 832
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 336
  %65 = getelementptr inbounds nuw double, ptr %64, i64 %6
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %67 = getelementptr inbounds nuw double, ptr %66, i64 %6
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %69 = getelementptr inbounds nuw double, ptr %68, i64 %6
  %70 = getelementptr inbounds nuw double, ptr %61, i64 %6
  %71 = getelementptr inbounds nuw i8, ptr %70, i64 64
  store double 0.000000e+00, ptr %71, align 8, !tbaa !41
  %72 = getelementptr inbounds nuw i8, ptr %70, i64 80
  store double 0.000000e+00, ptr %72, align 8, !tbaa !41
  %73 = load double, ptr %65, align 8, !tbaa !41
  store double %73, ptr %70, align 8, !tbaa !41
  %74 = load double, ptr %67, align 8, !tbaa !41
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 688
  %76 = getelementptr inbounds nuw double, ptr %75, i64 %6
  store double %74, ptr %76, align 8, !tbaa !41
  %77 = load double, ptr %69, align 8, !tbaa !41
  %78 = getelementptr inbounds nuw i8, ptr %0, i64 672
  %79 = getelementptr inbounds nuw double, ptr %78, i64 %6
  store double %77, ptr %79, align 8, !tbaa !41
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 656
  %81 = getelementptr inbounds nuw double, ptr %80, i64 %6
  store double %77, ptr %81, align 8, !tbaa !41
  %82 = getelementptr inbounds nuw double, ptr %62, i64 %6
  %83 = getelementptr inbounds nuw i8, ptr %82, i64 64
  store double 0.000000e+00, ptr %83, align 8, !tbaa !41
  %84 = getelementptr inbounds nuw i8, ptr %82, i64 80
  store double 0.000000e+00, ptr %84, align 8, !tbaa !41
  store double %73, ptr %82, align 8, !tbaa !41
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %86 = getelementptr inbounds nuw double, ptr %85, i64 %6
  store double %74, ptr %86, align 8, !tbaa !41
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %88 = getelementptr inbounds nuw double, ptr %87, i64 %6
  store double %77, ptr %88, align 8, !tbaa !41
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %6
  store double %77, ptr %90, align 8, !tbaa !41
  %91 = getelementptr inbounds nuw double, ptr %63, i64 %6
  %92 = getelementptr inbounds nuw i8, ptr %91, i64 64
  store double 0.000000e+00, ptr %92, align 8, !tbaa !41
  %93 = getelementptr inbounds nuw i8, ptr %91, i64 80
  store double 0.000000e+00, ptr %93, align 8, !tbaa !41
  store double %73, ptr %91, align 8, !tbaa !41
  %94 = getelementptr inbounds nuw i8, ptr %0, i64 880
  %95 = getelementptr inbounds nuw double, ptr %94, i64 %6
  store double %74, ptr %95, align 8, !tbaa !41
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 864
  %97 = getelementptr inbounds nuw double, ptr %96, i64 %6
  store double %77, ptr %97, align 8, !tbaa !41
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 848
  %99 = getelementptr inbounds nuw double, ptr %98, i64 %6
  store double %77, ptr %99, align 8, !tbaa !41
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %101 = getelementptr inbounds nuw double, ptr %100, i64 %6
  %102 = load double, ptr %101, align 8, !tbaa !41
  %103 = getelementptr inbounds nuw i8, ptr %0, i64 1008
  %104 = getelementptr inbounds nuw double, ptr %103, i64 %6
  store double %102, ptr %104, align 8, !tbaa !41
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %106 = getelementptr inbounds nuw double, ptr %105, i64 %6
  store double %102, ptr %106, align 8, !tbaa !41
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 1168
  %108 = getelementptr inbounds nuw double, ptr %107, i64 %6
  store double 1.000000e+09, ptr %108, align 8, !tbaa !41
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %110 = getelementptr inbounds nuw double, ptr %109, i64 %6
  store double 0.000000e+00, ptr %110, align 8, !tbaa !41
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %112 = getelementptr inbounds nuw double, ptr %111, i64 %6
  %113 = load double, ptr %112, align 8, !tbaa !41
  %114 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %115 = getelementptr inbounds nuw double, ptr %114, i64 %6
  store double %113, ptr %115, align 8, !tbaa !41
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 1184
  %117 = getelementptr inbounds nuw double, ptr %116, i64 %6
  store double %113, ptr %117, align 8, !tbaa !41
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 560
  %119 = getelementptr inbounds nuw double, ptr %118, i64 %6
  %120 = load double, ptr %119, align 8, !tbaa !41
  %121 = getelementptr inbounds nuw i8, ptr %0, i64 1296
  %122 = getelementptr inbounds nuw double, ptr %121, i64 %6
  store double %120, ptr %122, align 8, !tbaa !41
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 1136
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 1152
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 1248
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 1264
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 1312
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 1328
  %133 = getelementptr inbounds nuw double, ptr %123, i64 %6
  store double 0.000000e+00, ptr %133, align 8, !tbaa !41
  %134 = getelementptr inbounds nuw double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %134, align 8, !tbaa !41
  %135 = getelementptr inbounds nuw double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %135, align 8, !tbaa !41
  %136 = getelementptr inbounds nuw double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !41
  %137 = getelementptr inbounds nuw double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !41
  %138 = getelementptr inbounds nuw double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !41
  %139 = getelementptr inbounds nuw double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !41
  %140 = getelementptr inbounds nuw double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !41
  %141 = getelementptr inbounds nuw double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !41
  %142 = getelementptr inbounds nuw double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !41
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 1376
  %144 = getelementptr inbounds nuw i64, ptr %143, i64 %6
  store i64 0, ptr %144, align 8, !tbaa !29
  %145 = getelementptr inbounds nuw i8, ptr %0, i64 1392
  %146 = getelementptr inbounds nuw i64, ptr %145, i64 %6
  store i64 -1, ptr %146, align 8, !tbaa !29
  %147 = getelementptr inbounds nuw i8, ptr %0, i64 1360
  %148 = getelementptr inbounds nuw i64, ptr %147, i64 %6
  store i64 -1, ptr %148, align 8, !tbaa !29
  %149 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %150 = getelementptr inbounds nuw i64, ptr %149, i64 %6
  store i64 -1, ptr %150, align 8, !tbaa !29
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1520) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #7
  ret void

151:                                              ; preds = %30, %530
  %152 = phi i64 [ %28, %30 ], [ %532, %530 ]
  %153 = phi i64 [ 0, %30 ], [ %531, %530 ]
  %154 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %153
  %155 = load i64, ptr %33, align 8, !tbaa !20
  %156 = load i64, ptr %34, align 16, !tbaa !21
  %157 = mul nsw i64 %152, %3
  %158 = add nsw i64 %157, %153
  %159 = getelementptr inbounds nuw i8, ptr %154, i64 1888
  %160 = load i64, ptr %159, align 16, !tbaa !30
  %161 = mul i64 %158, 368
  %162 = getelementptr i8, ptr %36, i64 %161
  %163 = getelementptr inbounds nuw double, ptr %154, i64 %6
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
  %177 = getelementptr inbounds nuw i8, ptr %154, i64 1984
  %178 = load ptr, ptr %177, align 16, !tbaa !66
  %179 = getelementptr inbounds nuw double, ptr %178, i64 %6
  %180 = getelementptr double, ptr %174, i64 %155
  %181 = getelementptr inbounds nuw i8, ptr %154, i64 1992
  %182 = load ptr, ptr %181, align 8, !tbaa !47
  %183 = getelementptr inbounds nuw double, ptr %182, i64 %6
  %184 = shl i64 %155, 4
  %185 = getelementptr i8, ptr %174, i64 %184
  %186 = getelementptr inbounds nuw i8, ptr %154, i64 2000
  %187 = load ptr, ptr %186, align 16, !tbaa !117
  %188 = getelementptr inbounds nuw double, ptr %187, i64 %6
  %189 = and i64 %155, 1
  %190 = icmp eq i64 %155, 1
  br i1 %190, label %204, label %191

191:                                              ; preds = %176
  %192 = and i64 %155, 9223372036854775806
  br label %232

193:                                              ; preds = %193, %151
  %194 = phi i64 [ 0, %151 ], [ %202, %193 ]
  %195 = getelementptr double, ptr %162, i64 %194
  %196 = load double, ptr %195, align 8, !tbaa !41
  %197 = getelementptr inbounds nuw <2 x double>, ptr %163, i64 %194
  store double %196, ptr %197, align 8, !tbaa !41
  %198 = or disjoint i64 %194, 1
  %199 = getelementptr double, ptr %162, i64 %198
  %200 = load double, ptr %199, align 8, !tbaa !41
  %201 = getelementptr inbounds nuw <2 x double>, ptr %163, i64 %198
  store double %200, ptr %201, align 8, !tbaa !41
  %202 = add nuw nsw i64 %194, 2
  %203 = icmp eq i64 %202, 46
  br i1 %203, label %164, label %193, !llvm.loop !148

204:                                              ; preds = %232, %176
  %205 = phi i64 [ 0, %176 ], [ %254, %232 ]
  %206 = icmp eq i64 %189, 0
  br i1 %206, label %217, label %207

207:                                              ; preds = %204
  %208 = getelementptr inbounds nuw double, ptr %174, i64 %205
  %209 = load double, ptr %208, align 8, !tbaa !41
  %210 = getelementptr inbounds nuw <2 x double>, ptr %179, i64 %205
  store double %209, ptr %210, align 8, !tbaa !41
  %211 = getelementptr double, ptr %180, i64 %205
  %212 = load double, ptr %211, align 8, !tbaa !41
  %213 = getelementptr inbounds nuw <2 x double>, ptr %183, i64 %205
  store double %212, ptr %213, align 8, !tbaa !41
  %214 = getelementptr double, ptr %185, i64 %205
  %215 = load double, ptr %214, align 8, !tbaa !41
  %216 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %205
  store double %215, ptr %216, align 8, !tbaa !41
  br label %217

217:                                              ; preds = %207, %204, %164
  %218 = getelementptr inbounds nuw i8, ptr %154, i64 240
  %219 = getelementptr inbounds nuw double, ptr %218, i64 %6
  %220 = load double, ptr %219, align 8, !tbaa !41
  %221 = load double, ptr %163, align 8, !tbaa !41
  %222 = icmp sgt i64 %171, 0
  br i1 %222, label %223, label %269

223:                                              ; preds = %217
  %224 = getelementptr double, ptr %174, i64 %168
  %225 = getelementptr inbounds nuw i8, ptr %154, i64 2008
  %226 = load ptr, ptr %225, align 8, !tbaa !34
  %227 = getelementptr inbounds nuw double, ptr %226, i64 %6
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
  %236 = load double, ptr %235, align 8, !tbaa !41
  %237 = getelementptr inbounds nuw <2 x double>, ptr %179, i64 %233
  store double %236, ptr %237, align 8, !tbaa !41
  %238 = getelementptr double, ptr %180, i64 %233
  %239 = load double, ptr %238, align 8, !tbaa !41
  %240 = getelementptr inbounds nuw <2 x double>, ptr %183, i64 %233
  store double %239, ptr %240, align 8, !tbaa !41
  %241 = getelementptr double, ptr %185, i64 %233
  %242 = load double, ptr %241, align 8, !tbaa !41
  %243 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %233
  store double %242, ptr %243, align 8, !tbaa !41
  %244 = or disjoint i64 %233, 1
  %245 = getelementptr inbounds nuw double, ptr %174, i64 %244
  %246 = load double, ptr %245, align 8, !tbaa !41
  %247 = getelementptr inbounds nuw <2 x double>, ptr %179, i64 %244
  store double %246, ptr %247, align 8, !tbaa !41
  %248 = getelementptr double, ptr %180, i64 %244
  %249 = load double, ptr %248, align 8, !tbaa !41
  %250 = getelementptr inbounds nuw <2 x double>, ptr %183, i64 %244
  store double %249, ptr %250, align 8, !tbaa !41
  %251 = getelementptr double, ptr %185, i64 %244
  %252 = load double, ptr %251, align 8, !tbaa !41
  %253 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %244
  store double %252, ptr %253, align 8, !tbaa !41
  %254 = add nuw nsw i64 %233, 2
  %255 = add i64 %234, 2
  %256 = icmp eq i64 %255, %192
  br i1 %256, label %204, label %232, !llvm.loop !149

257:                                              ; preds = %278, %223
  %258 = phi i64 [ 0, %223 ], [ %296, %278 ]
  %259 = icmp eq i64 %228, 0
  br i1 %259, label %269, label %260

260:                                              ; preds = %257, %260
  %261 = phi i64 [ %266, %260 ], [ %258, %257 ]
  %262 = phi i64 [ %267, %260 ], [ 0, %257 ]
  %263 = getelementptr double, ptr %224, i64 %261
  %264 = load double, ptr %263, align 8, !tbaa !41
  %265 = getelementptr inbounds nuw <2 x double>, ptr %227, i64 %261
  store double %264, ptr %265, align 8, !tbaa !41
  %266 = add nuw nsw i64 %261, 1
  %267 = add i64 %262, 1
  %268 = icmp eq i64 %267, %228
  br i1 %268, label %269, label %260, !llvm.loop !150

269:                                              ; preds = %257, %260, %217
  %270 = icmp ne i64 %160, 0
  %271 = icmp sgt i64 %155, -1
  %272 = select i1 %270, i1 %271, i1 false
  br i1 %272, label %273, label %299

273:                                              ; preds = %269
  %274 = fdiv double 1.000000e+00, %221
  %275 = getelementptr inbounds nuw i8, ptr %154, i64 2008
  %276 = load ptr, ptr %275, align 8, !tbaa !34
  %277 = getelementptr inbounds nuw double, ptr %276, i64 %6
  br label %418

278:                                              ; preds = %278, %230
  %279 = phi i64 [ 0, %230 ], [ %296, %278 ]
  %280 = phi i64 [ 0, %230 ], [ %297, %278 ]
  %281 = getelementptr double, ptr %224, i64 %279
  %282 = load double, ptr %281, align 8, !tbaa !41
  %283 = getelementptr inbounds nuw <2 x double>, ptr %227, i64 %279
  store double %282, ptr %283, align 8, !tbaa !41
  %284 = or disjoint i64 %279, 1
  %285 = getelementptr double, ptr %224, i64 %284
  %286 = load double, ptr %285, align 8, !tbaa !41
  %287 = getelementptr inbounds nuw <2 x double>, ptr %227, i64 %284
  store double %286, ptr %287, align 8, !tbaa !41
  %288 = or disjoint i64 %279, 2
  %289 = getelementptr double, ptr %224, i64 %288
  %290 = load double, ptr %289, align 8, !tbaa !41
  %291 = getelementptr inbounds nuw <2 x double>, ptr %227, i64 %288
  store double %290, ptr %291, align 8, !tbaa !41
  %292 = or disjoint i64 %279, 3
  %293 = getelementptr double, ptr %224, i64 %292
  %294 = load double, ptr %293, align 8, !tbaa !41
  %295 = getelementptr inbounds nuw <2 x double>, ptr %227, i64 %292
  store double %294, ptr %295, align 8, !tbaa !41
  %296 = add nuw nsw i64 %279, 4
  %297 = add i64 %280, 4
  %298 = icmp eq i64 %297, %231
  br i1 %298, label %257, label %278, !llvm.loop !151

299:                                              ; preds = %418, %269
  %300 = getelementptr inbounds nuw i8, ptr %154, i64 640
  %301 = getelementptr inbounds nuw double, ptr %300, i64 %6
  %302 = load double, ptr %301, align 8, !tbaa !41
  %303 = getelementptr inbounds nuw i8, ptr %154, i64 656
  %304 = getelementptr inbounds nuw double, ptr %303, i64 %6
  %305 = load double, ptr %304, align 8, !tbaa !41
  %306 = getelementptr inbounds nuw i8, ptr %154, i64 672
  %307 = getelementptr inbounds nuw double, ptr %306, i64 %6
  %308 = load double, ptr %307, align 8, !tbaa !41
  %309 = getelementptr inbounds nuw i8, ptr %154, i64 688
  %310 = getelementptr inbounds nuw double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !41
  %312 = tail call double @llvm.fmuladd.f64(double %221, double %311, double %308)
  %313 = tail call double @llvm.fmuladd.f64(double %221, double %312, double %305)
  %314 = tail call double @llvm.fmuladd.f64(double %221, double %313, double %302)
  %315 = getelementptr inbounds nuw i8, ptr %154, i64 208
  %316 = getelementptr inbounds nuw double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !41
  %318 = getelementptr inbounds nuw i8, ptr %154, i64 352
  %319 = getelementptr inbounds nuw double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !41
  %321 = getelementptr inbounds nuw i8, ptr %154, i64 384
  %322 = getelementptr inbounds nuw double, ptr %321, i64 %6
  %323 = load double, ptr %322, align 8, !tbaa !41
  %324 = fsub double %320, %323
  %325 = fmul double %317, %324
  %326 = getelementptr inbounds nuw i8, ptr %154, i64 736
  %327 = getelementptr inbounds nuw i8, ptr %154, i64 928
  %328 = getelementptr inbounds nuw i8, ptr %154, i64 1120
  %329 = getelementptr inbounds nuw i8, ptr %154, i64 224
  %330 = getelementptr inbounds nuw double, ptr %329, i64 %6
  %331 = getelementptr inbounds nuw i8, ptr %154, i64 256
  %332 = getelementptr inbounds nuw double, ptr %331, i64 %6
  %333 = getelementptr inbounds nuw double, ptr %326, i64 %6
  %334 = getelementptr inbounds nuw i8, ptr %333, i64 80
  store double 0.000000e+00, ptr %334, align 8, !tbaa !41
  %335 = getelementptr inbounds nuw i8, ptr %333, i64 96
  store double 0.000000e+00, ptr %335, align 8, !tbaa !41
  %336 = getelementptr inbounds nuw i8, ptr %333, i64 112
  store double 0.000000e+00, ptr %336, align 8, !tbaa !41
  %337 = getelementptr inbounds nuw i8, ptr %333, i64 128
  store double 0.000000e+00, ptr %337, align 8, !tbaa !41
  %338 = getelementptr inbounds nuw i8, ptr %333, i64 160
  store double 0.000000e+00, ptr %338, align 8, !tbaa !41
  store double %221, ptr %333, align 8, !tbaa !41
  %339 = getelementptr inbounds nuw i8, ptr %154, i64 752
  %340 = getelementptr inbounds nuw double, ptr %339, i64 %6
  store double %320, ptr %340, align 8, !tbaa !41
  %341 = load double, ptr %330, align 8, !tbaa !41
  %342 = getelementptr inbounds nuw i8, ptr %154, i64 768
  %343 = getelementptr inbounds nuw double, ptr %342, i64 %6
  store double %341, ptr %343, align 8, !tbaa !41
  %344 = getelementptr inbounds nuw i8, ptr %154, i64 784
  %345 = getelementptr inbounds nuw double, ptr %344, i64 %6
  store double %325, ptr %345, align 8, !tbaa !41
  %346 = getelementptr inbounds nuw i8, ptr %154, i64 880
  %347 = getelementptr inbounds nuw double, ptr %346, i64 %6
  store double %220, ptr %347, align 8, !tbaa !41
  %348 = load double, ptr %332, align 8, !tbaa !41
  %349 = getelementptr inbounds nuw i8, ptr %154, i64 800
  %350 = getelementptr inbounds nuw double, ptr %349, i64 %6
  store double %348, ptr %350, align 8, !tbaa !41
  %351 = getelementptr inbounds nuw i8, ptr %154, i64 912
  %352 = getelementptr inbounds nuw double, ptr %351, i64 %6
  store double %314, ptr %352, align 8, !tbaa !41
  %353 = getelementptr inbounds nuw double, ptr %327, i64 %6
  %354 = getelementptr inbounds nuw i8, ptr %353, i64 80
  store double 0.000000e+00, ptr %354, align 8, !tbaa !41
  %355 = getelementptr inbounds nuw i8, ptr %353, i64 96
  store double 0.000000e+00, ptr %355, align 8, !tbaa !41
  %356 = getelementptr inbounds nuw i8, ptr %353, i64 112
  store double 0.000000e+00, ptr %356, align 8, !tbaa !41
  %357 = getelementptr inbounds nuw i8, ptr %353, i64 128
  store double 0.000000e+00, ptr %357, align 8, !tbaa !41
  %358 = getelementptr inbounds nuw i8, ptr %353, i64 160
  store double 0.000000e+00, ptr %358, align 8, !tbaa !41
  store double %221, ptr %353, align 8, !tbaa !41
  %359 = getelementptr inbounds nuw i8, ptr %154, i64 944
  %360 = getelementptr inbounds nuw double, ptr %359, i64 %6
  store double %320, ptr %360, align 8, !tbaa !41
  %361 = getelementptr inbounds nuw i8, ptr %154, i64 960
  %362 = getelementptr inbounds nuw double, ptr %361, i64 %6
  store double %341, ptr %362, align 8, !tbaa !41
  %363 = getelementptr inbounds nuw i8, ptr %154, i64 976
  %364 = getelementptr inbounds nuw double, ptr %363, i64 %6
  store double %325, ptr %364, align 8, !tbaa !41
  %365 = getelementptr inbounds nuw i8, ptr %154, i64 1072
  %366 = getelementptr inbounds nuw double, ptr %365, i64 %6
  store double %220, ptr %366, align 8, !tbaa !41
  %367 = getelementptr inbounds nuw i8, ptr %154, i64 992
  %368 = getelementptr inbounds nuw double, ptr %367, i64 %6
  store double %348, ptr %368, align 8, !tbaa !41
  %369 = getelementptr inbounds nuw i8, ptr %154, i64 1104
  %370 = getelementptr inbounds nuw double, ptr %369, i64 %6
  store double %314, ptr %370, align 8, !tbaa !41
  %371 = getelementptr inbounds nuw double, ptr %328, i64 %6
  %372 = getelementptr inbounds nuw i8, ptr %371, i64 80
  store double 0.000000e+00, ptr %372, align 8, !tbaa !41
  %373 = getelementptr inbounds nuw i8, ptr %371, i64 96
  store double 0.000000e+00, ptr %373, align 8, !tbaa !41
  %374 = getelementptr inbounds nuw i8, ptr %371, i64 112
  store double 0.000000e+00, ptr %374, align 8, !tbaa !41
  %375 = getelementptr inbounds nuw i8, ptr %371, i64 128
  store double 0.000000e+00, ptr %375, align 8, !tbaa !41
  %376 = getelementptr inbounds nuw i8, ptr %371, i64 160
  store double 0.000000e+00, ptr %376, align 8, !tbaa !41
  store double %221, ptr %371, align 8, !tbaa !41
  %377 = load double, ptr %319, align 8, !tbaa !41
  %378 = getelementptr inbounds nuw i8, ptr %154, i64 1136
  %379 = getelementptr inbounds nuw double, ptr %378, i64 %6
  store double %377, ptr %379, align 8, !tbaa !41
  %380 = getelementptr inbounds nuw i8, ptr %154, i64 1152
  %381 = getelementptr inbounds nuw double, ptr %380, i64 %6
  store double %341, ptr %381, align 8, !tbaa !41
  %382 = getelementptr inbounds nuw i8, ptr %154, i64 1168
  %383 = getelementptr inbounds nuw double, ptr %382, i64 %6
  store double %325, ptr %383, align 8, !tbaa !41
  %384 = getelementptr inbounds nuw i8, ptr %154, i64 1264
  %385 = getelementptr inbounds nuw double, ptr %384, i64 %6
  store double %220, ptr %385, align 8, !tbaa !41
  %386 = getelementptr inbounds nuw i8, ptr %154, i64 1184
  %387 = getelementptr inbounds nuw double, ptr %386, i64 %6
  store double %348, ptr %387, align 8, !tbaa !41
  %388 = getelementptr inbounds nuw i8, ptr %154, i64 1296
  %389 = getelementptr inbounds nuw double, ptr %388, i64 %6
  store double %314, ptr %389, align 8, !tbaa !41
  %390 = load double, ptr %330, align 8, !tbaa !41
  %391 = fadd double %325, %390
  %392 = getelementptr inbounds nuw i8, ptr %154, i64 400
  %393 = getelementptr inbounds nuw double, ptr %392, i64 %6
  store double %391, ptr %393, align 8, !tbaa !41
  %394 = getelementptr inbounds nuw i8, ptr %154, i64 1392
  %395 = getelementptr inbounds nuw i8, ptr %154, i64 1600
  %396 = getelementptr inbounds nuw i8, ptr %154, i64 1616
  %397 = getelementptr inbounds nuw i8, ptr %154, i64 1808
  %398 = getelementptr inbounds nuw double, ptr %394, i64 %6
  store double %220, ptr %398, align 8, !tbaa !41
  %399 = getelementptr inbounds nuw double, ptr %395, i64 %6
  store double %220, ptr %399, align 8, !tbaa !41
  %400 = getelementptr inbounds nuw double, ptr %396, i64 %6
  store double %220, ptr %400, align 8, !tbaa !41
  %401 = getelementptr inbounds nuw double, ptr %397, i64 %6
  store double %220, ptr %401, align 8, !tbaa !41
  %402 = getelementptr inbounds nuw i8, ptr %154, i64 1408
  %403 = getelementptr inbounds nuw i8, ptr %154, i64 1424
  %404 = getelementptr inbounds nuw i8, ptr %154, i64 1824
  %405 = getelementptr inbounds nuw i8, ptr %154, i64 1792
  %406 = getelementptr inbounds nuw i8, ptr %154, i64 1712
  %407 = getelementptr inbounds nuw double, ptr %402, i64 %6
  store double 0.000000e+00, ptr %407, align 8, !tbaa !41
  %408 = getelementptr inbounds nuw double, ptr %403, i64 %6
  store double 0.000000e+00, ptr %408, align 8, !tbaa !41
  %409 = getelementptr inbounds nuw double, ptr %404, i64 %6
  store double 0.000000e+00, ptr %409, align 8, !tbaa !41
  %410 = getelementptr inbounds nuw double, ptr %405, i64 %6
  store double 0.000000e+00, ptr %410, align 8, !tbaa !41
  %411 = getelementptr inbounds nuw double, ptr %406, i64 %6
  store double 0.000000e+00, ptr %411, align 8, !tbaa !41
  %412 = getelementptr inbounds nuw i8, ptr %154, i64 1840
  %413 = getelementptr inbounds nuw i64, ptr %412, i64 %6
  store i64 0, ptr %413, align 8, !tbaa !29
  %414 = getelementptr inbounds nuw i8, ptr %154, i64 1856
  %415 = getelementptr inbounds nuw i64, ptr %414, i64 %6
  store i64 -1, ptr %415, align 8, !tbaa !29
  %416 = getelementptr inbounds nuw i8, ptr %154, i64 1872
  %417 = getelementptr inbounds nuw i64, ptr %416, i64 %6
  store i64 0, ptr %417, align 8, !tbaa !29
  br i1 %175, label %440, label %456

418:                                              ; preds = %273, %418
  %419 = phi i64 [ 0, %273 ], [ %438, %418 ]
  %420 = icmp slt i64 %419, %160
  %421 = select i1 %420, double %274, double 1.000000e+00
  %422 = shl nsw i64 %419, 6
  %423 = getelementptr inbounds nuw i8, ptr %277, i64 %422
  %424 = load double, ptr %423, align 8, !tbaa !41
  %425 = fmul double %421, %424
  store double %425, ptr %423, align 8, !tbaa !41
  %426 = fdiv double %421, %221
  %427 = getelementptr inbounds nuw i8, ptr %423, i64 16
  %428 = load double, ptr %427, align 8, !tbaa !41
  %429 = fmul double %426, %428
  store double %429, ptr %427, align 8, !tbaa !41
  %430 = fdiv double %426, %221
  %431 = getelementptr inbounds nuw i8, ptr %423, i64 32
  %432 = load double, ptr %431, align 8, !tbaa !41
  %433 = fmul double %430, %432
  store double %433, ptr %431, align 8, !tbaa !41
  %434 = fdiv double %430, %221
  %435 = getelementptr inbounds nuw i8, ptr %423, i64 48
  %436 = load double, ptr %435, align 8, !tbaa !41
  %437 = fmul double %434, %436
  store double %437, ptr %435, align 8, !tbaa !41
  %438 = add nuw nsw i64 %419, 1
  %439 = icmp slt i64 %419, %155
  br i1 %439, label %418, label %299, !llvm.loop !152

440:                                              ; preds = %299
  %441 = getelementptr inbounds nuw i8, ptr %154, i64 1912
  %442 = load ptr, ptr %441, align 8, !tbaa !55
  %443 = getelementptr inbounds nuw double, ptr %442, i64 %6
  %444 = getelementptr inbounds nuw i8, ptr %154, i64 1904
  %445 = load ptr, ptr %444, align 16, !tbaa !45
  %446 = getelementptr inbounds nuw double, ptr %445, i64 %6
  %447 = getelementptr inbounds nuw i8, ptr %154, i64 1896
  %448 = load ptr, ptr %447, align 8, !tbaa !56
  %449 = getelementptr inbounds nuw double, ptr %448, i64 %6
  %450 = getelementptr inbounds nuw i8, ptr %154, i64 1936
  %451 = load ptr, ptr %450, align 16, !tbaa !46
  %452 = getelementptr inbounds nuw double, ptr %451, i64 %6
  %453 = getelementptr inbounds nuw i8, ptr %154, i64 1928
  %454 = load ptr, ptr %453, align 8, !tbaa !59
  %455 = getelementptr inbounds nuw double, ptr %454, i64 %6
  br label %469

456:                                              ; preds = %469, %299
  %457 = icmp slt i64 %156, 0
  br i1 %457, label %530, label %458

458:                                              ; preds = %456
  %459 = getelementptr inbounds nuw i8, ptr %154, i64 2080
  %460 = load ptr, ptr %459, align 16, !tbaa !62
  %461 = getelementptr inbounds nuw double, ptr %460, i64 %6
  %462 = getelementptr inbounds nuw i8, ptr %154, i64 2072
  %463 = load ptr, ptr %462, align 8, !tbaa !48
  %464 = getelementptr inbounds nuw double, ptr %463, i64 %6
  %465 = icmp eq i64 %156, 0
  br i1 %465, label %478, label %466

466:                                              ; preds = %458
  %467 = add nuw i64 %156, 1
  %468 = and i64 %467, -2
  br label %503

469:                                              ; preds = %440, %469
  %470 = phi i64 [ 0, %440 ], [ %476, %469 ]
  %471 = getelementptr inbounds nuw <2 x double>, ptr %443, i64 %470
  store double %220, ptr %471, align 8, !tbaa !41
  %472 = getelementptr inbounds nuw <2 x double>, ptr %446, i64 %470
  store double %220, ptr %472, align 8, !tbaa !41
  %473 = getelementptr inbounds nuw <2 x double>, ptr %449, i64 %470
  store double %220, ptr %473, align 8, !tbaa !41
  %474 = getelementptr inbounds nuw <2 x double>, ptr %452, i64 %470
  store double 1.000000e+00, ptr %474, align 8, !tbaa !41
  %475 = getelementptr inbounds nuw <2 x double>, ptr %455, i64 %470
  store double 1.000000e+00, ptr %475, align 8, !tbaa !41
  %476 = add nuw nsw i64 %470, 1
  %477 = icmp eq i64 %476, %155
  br i1 %477, label %456, label %469, !llvm.loop !153

478:                                              ; preds = %517, %458
  %479 = phi i64 [ 0, %458 ], [ %521, %517 ]
  %480 = and i64 %156, 1
  %481 = icmp eq i64 %480, 0
  br i1 %481, label %482, label %490

482:                                              ; preds = %478
  %483 = icmp slt i64 %479, %156
  br i1 %483, label %486, label %484

484:                                              ; preds = %482
  %485 = load double, ptr %319, align 8, !tbaa !41
  br label %486

486:                                              ; preds = %484, %482
  %487 = phi double [ %485, %484 ], [ %314, %482 ]
  %488 = getelementptr inbounds nuw <2 x double>, ptr %461, i64 %479
  store double %487, ptr %488, align 8, !tbaa !41
  %489 = getelementptr inbounds nuw <2 x double>, ptr %464, i64 %479
  store double %487, ptr %489, align 8, !tbaa !41
  br label %490

490:                                              ; preds = %478, %486
  %491 = icmp eq i64 %156, 0
  br i1 %491, label %530, label %492

492:                                              ; preds = %490
  %493 = getelementptr inbounds nuw i8, ptr %154, i64 2032
  %494 = load ptr, ptr %493, align 16, !tbaa !63
  %495 = getelementptr inbounds nuw double, ptr %494, i64 %6
  %496 = getelementptr inbounds nuw i8, ptr %154, i64 2024
  %497 = load ptr, ptr %496, align 8, !tbaa !49
  %498 = getelementptr inbounds nuw double, ptr %497, i64 %6
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
  %508 = load double, ptr %319, align 8, !tbaa !41
  br label %509

509:                                              ; preds = %503, %507
  %510 = phi double [ %508, %507 ], [ %314, %503 ]
  %511 = getelementptr inbounds nuw <2 x double>, ptr %461, i64 %504
  store double %510, ptr %511, align 8, !tbaa !41
  %512 = getelementptr inbounds nuw <2 x double>, ptr %464, i64 %504
  store double %510, ptr %512, align 8, !tbaa !41
  %513 = or disjoint i64 %504, 1
  %514 = icmp slt i64 %513, %156
  br i1 %514, label %517, label %515

515:                                              ; preds = %509
  %516 = load double, ptr %319, align 8, !tbaa !41
  br label %517

517:                                              ; preds = %515, %509
  %518 = phi double [ %516, %515 ], [ %314, %509 ]
  %519 = getelementptr inbounds nuw <2 x double>, ptr %461, i64 %513
  store double %518, ptr %519, align 8, !tbaa !41
  %520 = getelementptr inbounds nuw <2 x double>, ptr %464, i64 %513
  store double %518, ptr %520, align 8, !tbaa !41
  %521 = add nuw i64 %504, 2
  %522 = add i64 %505, 2
  %523 = icmp eq i64 %522, %468
  br i1 %523, label %478, label %503, !llvm.loop !154

524:                                              ; preds = %534, %492
  %525 = phi i64 [ 0, %492 ], [ %542, %534 ]
  %526 = icmp eq i64 %499, 0
  br i1 %526, label %530, label %527

527:                                              ; preds = %524
  %528 = getelementptr inbounds nuw <2 x double>, ptr %495, i64 %525
  store double %220, ptr %528, align 8, !tbaa !41
  %529 = getelementptr inbounds nuw <2 x double>, ptr %498, i64 %525
  store double %220, ptr %529, align 8, !tbaa !41
  br label %530

530:                                              ; preds = %527, %524, %456, %490
  %531 = add nuw nsw i64 %153, 1
  %532 = load i64, ptr %27, align 16, !tbaa !16
  %533 = icmp slt i64 %531, %532
  br i1 %533, label %151, label %60, !llvm.loop !155

534:                                              ; preds = %534, %501
  %535 = phi i64 [ 0, %501 ], [ %542, %534 ]
  %536 = phi i64 [ 0, %501 ], [ %543, %534 ]
  %537 = getelementptr inbounds nuw <2 x double>, ptr %495, i64 %535
  store double %220, ptr %537, align 8, !tbaa !41
  %538 = getelementptr inbounds nuw <2 x double>, ptr %498, i64 %535
  store double %220, ptr %538, align 8, !tbaa !41
  %539 = or disjoint i64 %535, 1
  %540 = getelementptr inbounds nuw <2 x double>, ptr %495, i64 %539
  store double %220, ptr %540, align 8, !tbaa !41
  %541 = getelementptr inbounds nuw <2 x double>, ptr %498, i64 %539
  store double %220, ptr %541, align 8, !tbaa !41
  %542 = add nuw nsw i64 %535, 2
  %543 = add i64 %536, 2
  %544 = icmp eq i64 %543, %502
  br i1 %544, label %524, label %534, !llvm.loop !156
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(read, argmem: readwrite, inaccessiblemem: none)
define internal fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr nocapture noundef nonnull align 16 dereferenceable(1520) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, <2 x i64> noundef %3) unnamed_addr #4 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %6 = load <2 x double>, ptr %5, align 16, !tbaa !25
  %7 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %8 = load <2 x double>, ptr %7, align 16, !tbaa !25
  %9 = fadd <2 x double> %6, %8
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw i8, ptr %1, i64 136
  %12 = load ptr, ptr %11, align 8
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %14 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %15 = load ptr, ptr %14, align 8
  %16 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %17 = load ptr, ptr %16, align 8
  %18 = extractelement <2 x i64> %3, i64 0
  %19 = icmp eq i64 %18, 0
  br i1 %19, label %84, label %20

20:                                               ; preds = %4
  %21 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %22 = load i64, ptr %21, align 16, !tbaa !29
  %23 = shl nsw i64 %22, 1
  %24 = or disjoint i64 %23, %10
  %25 = getelementptr inbounds i64, ptr %12, i64 %24
  %26 = load i64, ptr %25, align 8, !tbaa !29
  %27 = getelementptr inbounds nuw [4 x i64], ptr %13, i64 0, i64 %10
  %28 = getelementptr inbounds i64, ptr %17, i64 %24
  %29 = load i64, ptr %28, align 8, !tbaa !29
  %30 = shl nsw i64 %29, 4
  %31 = getelementptr inbounds i8, ptr %15, i64 %30
  %32 = extractelement <2 x double> %9, i64 0
  %33 = load i64, ptr %27, align 8, !tbaa !29
  %34 = getelementptr i8, ptr %31, i64 -16
  %35 = icmp sgt i64 %33, 0
  br i1 %35, label %36, label %45

36:                                               ; preds = %20, %42
  %37 = phi i64 [ %43, %42 ], [ %33, %20 ]
  %38 = shl i64 %37, 4
  %39 = getelementptr i8, ptr %34, i64 %38
  %40 = load double, ptr %39, align 8, !tbaa !41
  %41 = fcmp ugt double %32, %40
  br i1 %41, label %45, label %42

42:                                               ; preds = %36
  %43 = add nsw i64 %37, -1
  store i64 %43, ptr %27, align 8, !tbaa !29
  %44 = icmp sgt i64 %37, 1
  br i1 %44, label %36, label %45, !llvm.loop !157

45:                                               ; preds = %36, %42, %20
  %46 = phi i64 [ %33, %20 ], [ %37, %36 ], [ %43, %42 ]
  %47 = icmp slt i64 %46, %26
  br i1 %47, label %48, label %57

48:                                               ; preds = %45, %54
  %49 = phi i64 [ %55, %54 ], [ %46, %45 ]
  %50 = shl nsw i64 %49, 4
  %51 = getelementptr inbounds i8, ptr %31, i64 %50
  %52 = load double, ptr %51, align 8, !tbaa !41
  %53 = fcmp ule double %32, %52
  br i1 %53, label %62, label %54

54:                                               ; preds = %48
  %55 = add i64 %49, 1
  store i64 %55, ptr %27, align 8, !tbaa !29
  %56 = icmp eq i64 %55, %26
  br i1 %56, label %57, label %48, !llvm.loop !158

57:                                               ; preds = %54, %45
  %58 = shl i64 %26, 4
  %59 = getelementptr i8, ptr %31, i64 %58
  %60 = getelementptr i8, ptr %59, i64 -8
  %61 = load double, ptr %60, align 8, !tbaa !41
  br label %81

62:                                               ; preds = %48
  %63 = shl nsw i64 %49, 1
  %64 = or disjoint i64 %63, 1
  %65 = getelementptr inbounds double, ptr %31, i64 %64
  %66 = load double, ptr %65, align 8, !tbaa !41
  %67 = icmp sgt i64 %49, 0
  br i1 %67, label %68, label %81

68:                                               ; preds = %62
  %69 = shl i64 %49, 4
  %70 = getelementptr i8, ptr %31, i64 %69
  %71 = getelementptr i8, ptr %70, i64 -8
  %72 = load double, ptr %71, align 8, !tbaa !41
  %73 = getelementptr i8, ptr %70, i64 -16
  %74 = load double, ptr %73, align 8, !tbaa !41
  %75 = fsub double %32, %74
  %76 = load double, ptr %70, align 8, !tbaa !41
  %77 = fsub double %76, %74
  %78 = fdiv double %75, %77
  %79 = fsub double %66, %72
  %80 = tail call double @llvm.fmuladd.f64(double %78, double %79, double %72)
  br label %81

81:                                               ; preds = %57, %68, %62
  %82 = phi double [ %80, %68 ], [ %66, %62 ], [ %61, %57 ]
  %83 = insertelement <2 x double> <double poison, double 0.000000e+00>, double %82, i64 0
  br label %84

84:                                               ; preds = %4, %81
  %85 = phi <2 x double> [ zeroinitializer, %4 ], [ %83, %81 ]
  %86 = extractelement <2 x i64> %3, i64 1
  %87 = icmp eq i64 %86, 0
  br i1 %87, label %153, label %88

88:                                               ; preds = %84
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1416
  %90 = load i64, ptr %89, align 8, !tbaa !29
  %91 = shl nsw i64 %90, 1
  %92 = or disjoint i64 %91, %10
  %93 = getelementptr inbounds i64, ptr %12, i64 %92
  %94 = load i64, ptr %93, align 8, !tbaa !29
  %95 = or disjoint i64 %10, 2
  %96 = getelementptr inbounds nuw [4 x i64], ptr %13, i64 0, i64 %95
  %97 = getelementptr inbounds i64, ptr %17, i64 %92
  %98 = load i64, ptr %97, align 8, !tbaa !29
  %99 = shl nsw i64 %98, 4
  %100 = getelementptr inbounds i8, ptr %15, i64 %99
  %101 = extractelement <2 x double> %9, i64 1
  %102 = load i64, ptr %96, align 8, !tbaa !29
  %103 = getelementptr i8, ptr %100, i64 -16
  %104 = icmp sgt i64 %102, 0
  br i1 %104, label %105, label %114

105:                                              ; preds = %88, %111
  %106 = phi i64 [ %112, %111 ], [ %102, %88 ]
  %107 = shl i64 %106, 4
  %108 = getelementptr i8, ptr %103, i64 %107
  %109 = load double, ptr %108, align 8, !tbaa !41
  %110 = fcmp ugt double %101, %109
  br i1 %110, label %114, label %111

111:                                              ; preds = %105
  %112 = add nsw i64 %106, -1
  store i64 %112, ptr %96, align 8, !tbaa !29
  %113 = icmp sgt i64 %106, 1
  br i1 %113, label %105, label %114, !llvm.loop !157

114:                                              ; preds = %105, %111, %88
  %115 = phi i64 [ %102, %88 ], [ %106, %105 ], [ %112, %111 ]
  %116 = icmp slt i64 %115, %94
  br i1 %116, label %117, label %126

117:                                              ; preds = %114, %123
  %118 = phi i64 [ %124, %123 ], [ %115, %114 ]
  %119 = shl nsw i64 %118, 4
  %120 = getelementptr inbounds i8, ptr %100, i64 %119
  %121 = load double, ptr %120, align 8, !tbaa !41
  %122 = fcmp ule double %101, %121
  br i1 %122, label %131, label %123

123:                                              ; preds = %117
  %124 = add i64 %118, 1
  store i64 %124, ptr %96, align 8, !tbaa !29
  %125 = icmp eq i64 %124, %94
  br i1 %125, label %126, label %117, !llvm.loop !158

126:                                              ; preds = %123, %114
  %127 = shl i64 %94, 4
  %128 = getelementptr i8, ptr %100, i64 %127
  %129 = getelementptr i8, ptr %128, i64 -8
  %130 = load double, ptr %129, align 8, !tbaa !41
  br label %150

131:                                              ; preds = %117
  %132 = shl nsw i64 %118, 1
  %133 = or disjoint i64 %132, 1
  %134 = getelementptr inbounds double, ptr %100, i64 %133
  %135 = load double, ptr %134, align 8, !tbaa !41
  %136 = icmp sgt i64 %118, 0
  br i1 %136, label %137, label %150

137:                                              ; preds = %131
  %138 = shl i64 %118, 4
  %139 = getelementptr i8, ptr %100, i64 %138
  %140 = getelementptr i8, ptr %139, i64 -8
  %141 = load double, ptr %140, align 8, !tbaa !41
  %142 = getelementptr i8, ptr %139, i64 -16
  %143 = load double, ptr %142, align 8, !tbaa !41
  %144 = fsub double %101, %143
  %145 = load double, ptr %139, align 8, !tbaa !41
  %146 = fsub double %145, %143
  %147 = fdiv double %144, %146
  %148 = fsub double %135, %141
  %149 = tail call double @llvm.fmuladd.f64(double %147, double %148, double %141)
  br label %150

150:                                              ; preds = %126, %137, %131
  %151 = phi double [ %149, %137 ], [ %135, %131 ], [ %130, %126 ]
  %152 = insertelement <2 x double> %85, double %151, i64 1
  br label %153

153:                                              ; preds = %150, %84
  %154 = phi <2 x double> [ %85, %84 ], [ %152, %150 ]
  ret <2 x double> %154
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <2 x double> @llvm.fmuladd.v2f64(<2 x double>, <2 x double>, <2 x double>) #5

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare double @llvm.fmuladd.f64(double, double, double) #5

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 16 dereferenceable(1520) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !159
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !160
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw [2 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !29
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !29
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %18 = getelementptr inbounds nuw double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !41
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !161
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !29
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %26 = getelementptr inbounds nuw double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !41
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %29 = getelementptr inbounds nuw double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !41
  %31 = fsub double %27, %30
  %32 = icmp sgt i64 %24, %20
  br i1 %32, label %33, label %69

33:                                               ; preds = %3
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %35 = getelementptr inbounds nuw double, ptr %34, i64 %10
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
  br i1 %68, label %69, label %36, !llvm.loop !162

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !41
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %73 = getelementptr inbounds nuw double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !41
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %76 = getelementptr inbounds nuw double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !41
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %78 = getelementptr inbounds nuw [2 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !41
  br label %284

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !41
  %82 = load double, ptr %35, align 8, !tbaa !41
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %84 = getelementptr inbounds nuw double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !41
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 1120
  %86 = getelementptr inbounds nuw double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !41
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !41
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1072
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !41
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !41
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 1088
  %94 = getelementptr inbounds nuw double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !41
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !41
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 1104
  %98 = getelementptr inbounds nuw double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !41
  %99 = load double, ptr %80, align 8, !tbaa !41
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %102 = getelementptr inbounds nuw double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !41
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %215

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %108 = load i64, ptr %107, align 16, !tbaa !16
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %168

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1512
  %112 = load ptr, ptr %111, align 8, !tbaa !27
  %113 = getelementptr inbounds nuw double, ptr %112, i64 %10
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
  %127 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %125, i32 0, i32 2
  %128 = load double, ptr %127, align 8, !tbaa !41
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %125, i32 2, i64 5
  %130 = load double, ptr %129, align 8, !tbaa !41
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
  %142 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %140, i32 0, i32 2
  %143 = load double, ptr %142, align 8, !tbaa !41
  %144 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %140, i32 2, i64 5
  %145 = load double, ptr %144, align 8, !tbaa !41
  %146 = tail call double @llvm.fmuladd.f64(double %143, double %145, double %139)
  %147 = or disjoint i64 %140, 1
  %148 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %147, i32 0, i32 2
  %149 = load double, ptr %148, align 8, !tbaa !41
  %150 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %147, i32 2, i64 5
  %151 = load double, ptr %150, align 8, !tbaa !41
  %152 = tail call double @llvm.fmuladd.f64(double %149, double %151, double %146)
  %153 = or disjoint i64 %140, 2
  %154 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %153, i32 0, i32 2
  %155 = load double, ptr %154, align 8, !tbaa !41
  %156 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %153, i32 2, i64 5
  %157 = load double, ptr %156, align 8, !tbaa !41
  %158 = tail call double @llvm.fmuladd.f64(double %155, double %157, double %152)
  %159 = or disjoint i64 %140, 3
  %160 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %159, i32 0, i32 2
  %161 = load double, ptr %160, align 8, !tbaa !41
  %162 = getelementptr inbounds nuw %struct.Piece, ptr %113, i64 %159, i32 2, i64 5
  %163 = load double, ptr %162, align 8, !tbaa !41
  %164 = tail call double @llvm.fmuladd.f64(double %161, double %163, double %158)
  %165 = add nuw nsw i64 %140, 4
  %166 = add i64 %141, 4
  %167 = icmp eq i64 %166, %117
  br i1 %167, label %118, label %138, !llvm.loop !164

168:                                              ; preds = %106, %135
  %169 = phi double [ %137, %135 ], [ 0.000000e+00, %106 ]
  %170 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %171 = getelementptr inbounds nuw double, ptr %170, i64 %10
  %172 = load double, ptr %171, align 8, !tbaa !41
  %173 = fmul double %169, %172
  %174 = fdiv double %173, %30
  %175 = fcmp ogt double %174, 0.000000e+00
  %176 = fneg double %174
  %177 = select i1 %175, double %176, double -0.000000e+00
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %179 = getelementptr inbounds nuw double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !41
  %181 = fdiv double %177, %180
  %182 = insertelement <2 x double> poison, double %181, i64 0
  %183 = shufflevector <2 x double> %182, <2 x double> poison, <2 x i32> zeroinitializer
  %184 = fcmp ogt <2 x double> %183, splat (double -7.000000e+02)
  %185 = select <2 x i1> %184, <2 x double> %183, <2 x double> splat (double -7.000000e+02)
  %186 = fcmp olt <2 x double> %185, splat (double 7.000000e+02)
  %187 = select <2 x i1> %186, <2 x double> %185, <2 x double> splat (double 7.000000e+02)
  %188 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %187, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %189 = fadd <2 x double> %188, splat (double 0xC338000000000000)
  %190 = fneg <2 x double> %189
  %191 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %190, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %187)
  %192 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %190, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %191)
  %193 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %192, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %194 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %193, <2 x double> %192, <2 x double> splat (double 0x3E5AE64567F544E4))
  %195 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %194, <2 x double> %192, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %196 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %195, <2 x double> %192, <2 x double> splat (double 0x3EC71DE3A556C734))
  %197 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %196, <2 x double> %192, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %198 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %197, <2 x double> %192, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %199 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %198, <2 x double> %192, <2 x double> splat (double 0x3F56C16C16C16C17))
  %200 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %199, <2 x double> %192, <2 x double> splat (double 0x3F81111111111111))
  %201 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %200, <2 x double> %192, <2 x double> splat (double 0x3FA5555555555555))
  %202 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %201, <2 x double> %192, <2 x double> splat (double 0x3FC5555555555555))
  %203 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %202, <2 x double> %192, <2 x double> splat (double 5.000000e-01))
  %204 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %203, <2 x double> %192, <2 x double> splat (double 1.000000e+00))
  %205 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %204, <2 x double> %192, <2 x double> splat (double 1.000000e+00))
  %206 = bitcast <2 x double> %188 to <2 x i64>
  %207 = shl <2 x i64> %206, splat (i64 52)
  %208 = bitcast <2 x double> %205 to <2 x i64>
  %209 = add <2 x i64> %207, %208
  %210 = bitcast <2 x i64> %209 to <2 x double>
  %211 = extractelement <2 x double> %210, i64 0
  %212 = fmul double %30, %211
  %213 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %214 = getelementptr inbounds nuw double, ptr %213, i64 %10
  store double %212, ptr %214, align 8, !tbaa !41
  br label %215

215:                                              ; preds = %79, %168
  %216 = fcmp une double %99, %103
  br i1 %216, label %217, label %256

217:                                              ; preds = %215
  %218 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %219 = getelementptr inbounds nuw double, ptr %218, i64 %10
  store double %99, ptr %219, align 8, !tbaa !41
  %220 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %221 = getelementptr inbounds nuw double, ptr %220, i64 %10
  store double %82, ptr %221, align 8, !tbaa !41
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %223 = getelementptr inbounds nuw double, ptr %222, i64 %10
  %224 = load double, ptr %223, align 8, !tbaa !41
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %226 = getelementptr inbounds nuw double, ptr %225, i64 %10
  store double %224, ptr %226, align 8, !tbaa !41
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 1392
  %228 = getelementptr inbounds nuw i64, ptr %227, i64 %10
  store i64 -1, ptr %228, align 8, !tbaa !29
  %229 = fcmp oeq double %99, 0.000000e+00
  %230 = fcmp oeq double %99, 3.000000e+00
  %231 = or i1 %229, %230
  br i1 %231, label %232, label %240

232:                                              ; preds = %217
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %234 = getelementptr inbounds nuw double, ptr %233, i64 %10
  store double %30, ptr %234, align 8, !tbaa !41
  store double %30, ptr %26, align 8, !tbaa !41
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %236 = getelementptr inbounds nuw double, ptr %235, i64 %10
  %237 = load double, ptr %236, align 8, !tbaa !41
  %238 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %239 = getelementptr inbounds nuw double, ptr %238, i64 %10
  store double %237, ptr %239, align 8, !tbaa !41
  br label %240

240:                                              ; preds = %217, %232
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %242 = load i64, ptr %241, align 16, !tbaa !16
  %243 = icmp sgt i64 %242, 0
  br i1 %243, label %244, label %256

244:                                              ; preds = %240
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 1512
  %246 = load ptr, ptr %245, align 8, !tbaa !27
  %247 = getelementptr inbounds nuw i64, ptr %246, i64 %10
  %248 = sext i1 %230 to i64
  br label %249

249:                                              ; preds = %244, %249
  %250 = phi i64 [ 0, %244 ], [ %253, %249 ]
  %251 = getelementptr inbounds nuw %struct.Piece, ptr %247, i64 %250, i32 38
  store i64 -1, ptr %251, align 8, !tbaa !29
  %252 = getelementptr inbounds nuw %struct.Piece, ptr %247, i64 %250, i32 39
  store i64 %248, ptr %252, align 8, !tbaa !29
  %253 = add nuw nsw i64 %250, 1
  %254 = load i64, ptr %241, align 16, !tbaa !16
  %255 = icmp slt i64 %253, %254
  br i1 %255, label %249, label %256, !llvm.loop !165

256:                                              ; preds = %249, %240, %215
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !25
  %257 = getelementptr inbounds nuw i64, ptr %4, i64 %10
  store i64 -1, ptr %257, align 8, !tbaa !29
  %258 = load <2 x i64>, ptr %4, align 16, !tbaa !25
  %259 = getelementptr inbounds nuw i8, ptr %0, i64 736
  %260 = load <2 x double>, ptr %259, align 16, !tbaa !25
  %261 = getelementptr inbounds nuw i8, ptr %0, i64 80
  %262 = load <2 x double>, ptr %261, align 16, !tbaa !25
  %263 = fmul <2 x double> %262, splat (double 5.000000e-01)
  %264 = load <2 x double>, ptr %89, align 16, !tbaa !25
  %265 = fadd <2 x double> %264, %263
  %266 = fadd <2 x double> %265, splat (double -1.000000e-03)
  %267 = fcmp ult <2 x double> %260, %266
  %268 = fsub <2 x double> %264, %263
  %269 = fadd <2 x double> %268, splat (double 1.000000e-03)
  %270 = fcmp ole <2 x double> %260, %269
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 1376
  %272 = load <2 x i64>, ptr %271, align 16, !tbaa !25
  %273 = select <2 x i1> %270, <2 x i64> splat (i64 -1), <2 x i64> %272
  %274 = select <2 x i1> %267, <2 x i64> %273, <2 x i64> zeroinitializer
  %275 = xor <2 x i64> %274, %272
  %276 = and <2 x i64> %275, %258
  %277 = and <2 x i64> %274, %258
  %278 = xor <2 x i64> %258, splat (i64 -1)
  %279 = and <2 x i64> %272, %278
  %280 = or disjoint <2 x i64> %277, %279
  store <2 x i64> %280, ptr %271, align 16, !tbaa !25
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 1392
  %282 = load <2 x i64>, ptr %281, align 16, !tbaa !25
  %283 = or <2 x i64> %276, %282
  store <2 x i64> %283, ptr %281, align 16, !tbaa !25
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  br label %284

284:                                              ; preds = %256, %69
  ret void
}

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.vector.reduce.or.v2i64(<2 x i64>) #5

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <2 x double> @llvm.fabs.v2f64(<2 x double>) #5

; Function Attrs: mustprogress nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare <2 x double> @llvm.sqrt.v2f64(<2 x double>) #5

; Function Attrs: nocallback nofree nosync nounwind speculatable willreturn memory(none)
declare i64 @llvm.smin.i64(i64, i64) #6

attributes #0 = { nounwind }
attributes #1 = { nounwind }
attributes #2 = { nounwind }
attributes #3 = { nounwind }
attributes #4 = { nounwind }
attributes #5 = { nounwind }
attributes #6 = { nounwind }
attributes #7 = { nounwind }
attributes #8 = { nounwind }

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
!16 = !{!17, !6, i64 576}
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 576, !6, i64 584, !6, i64 592, !6, i64 600, !6, i64 608, !7, i64 624, !7, i64 640, !7, i64 736, !7, i64 832, !7, i64 928, !7, i64 944, !7, i64 960, !7, i64 976, !7, i64 992, !7, i64 1008, !7, i64 1024, !7, i64 1040, !7, i64 1056, !7, i64 1072, !7, i64 1088, !7, i64 1104, !7, i64 1120, !7, i64 1136, !7, i64 1152, !7, i64 1168, !7, i64 1184, !7, i64 1200, !7, i64 1216, !7, i64 1232, !7, i64 1248, !7, i64 1264, !7, i64 1280, !7, i64 1296, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1472, !7, i64 1488, !11, i64 1504, !19, i64 1512}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 584}
!21 = !{!17, !6, i64 592}
!22 = !{!5, !6, i64 32}
!23 = !{!17, !6, i64 600}
!24 = !{!5, !9, i64 64}
!25 = !{!7, !7, i64 0}
!26 = !{!17, !6, i64 608}
!27 = !{!17, !19, i64 1512}
!28 = !{!5, !12, i64 152}
!29 = !{!6, !6, i64 0}
!30 = !{!31, !6, i64 1888}
!31 = !{!"_ZTS5Piece", !32, i64 0, !7, i64 736, !7, i64 928, !7, i64 1120, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1520, !7, i64 1536, !7, i64 1552, !7, i64 1568, !7, i64 1584, !7, i64 1600, !7, i64 1616, !7, i64 1632, !7, i64 1648, !7, i64 1664, !7, i64 1680, !7, i64 1696, !7, i64 1712, !7, i64 1728, !7, i64 1744, !7, i64 1760, !7, i64 1776, !7, i64 1792, !7, i64 1808, !7, i64 1824, !7, i64 1840, !7, i64 1856, !7, i64 1872, !6, i64 1888, !11, i64 1896, !11, i64 1904, !11, i64 1912, !11, i64 1920, !11, i64 1928, !11, i64 1936, !11, i64 1944, !11, i64 1952, !11, i64 1960, !11, i64 1968, !11, i64 1976, !11, i64 1984, !11, i64 1992, !11, i64 2000, !11, i64 2008, !11, i64 2016, !11, i64 2024, !11, i64 2032, !11, i64 2040, !11, i64 2048, !11, i64 2056, !11, i64 2064, !11, i64 2072, !11, i64 2080}
!32 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560, !7, i64 576, !7, i64 592, !7, i64 608, !7, i64 624, !7, i64 640, !7, i64 656, !7, i64 672, !7, i64 688, !7, i64 704, !7, i64 720}
!33 = !{!11, !11, i64 0}
!34 = !{!31, !11, i64 2008}
!35 = distinct !{!35, !36}
!36 = !{!"llvm.loop.mustprogress"}
!37 = !{!17, !11, i64 1504}
!38 = !{!5, !6, i64 0}
!39 = !{!5, !6, i64 176}
!40 = !{!5, !6, i64 184}
!41 = !{!9, !9, i64 0}
!42 = !{!5, !10, i64 208}
!43 = !{!5, !10, i64 192}
!44 = !{!5, !10, i64 200}
!45 = !{!31, !11, i64 1904}
!46 = !{!31, !11, i64 1936}
!47 = !{!31, !11, i64 1992}
!48 = !{!31, !11, i64 2072}
!49 = !{!31, !11, i64 2024}
!50 = distinct !{!50, !36}
!51 = distinct !{!51, !36}
!52 = distinct !{!52, !36}
!53 = distinct !{!53, !36}
!54 = distinct !{!54, !36}
!55 = !{!31, !11, i64 1912}
!56 = !{!31, !11, i64 1896}
!57 = !{!31, !11, i64 1920}
!58 = distinct !{!58, !36}
!59 = !{!31, !11, i64 1928}
!60 = distinct !{!60, !36}
!61 = distinct !{!61, !36}
!62 = !{!31, !11, i64 2080}
!63 = !{!31, !11, i64 2032}
!64 = !{!31, !11, i64 2040}
!65 = distinct !{!65, !36}
!66 = !{!31, !11, i64 1984}
!67 = !{!31, !11, i64 1960}
!68 = !{!31, !11, i64 1968}
!69 = !{!31, !11, i64 1976}
!70 = !{!31, !11, i64 1944}
!71 = !{!31, !11, i64 1952}
!72 = distinct !{!72, !36}
!73 = !{!31, !11, i64 2064}
!74 = distinct !{!74, !36}
!75 = !{!31, !11, i64 2048}
!76 = !{!31, !11, i64 2056}
!77 = distinct !{!77, !36}
!78 = distinct !{!78, !36}
!79 = distinct !{!79, !36}
!80 = distinct !{!80, !36}
!81 = !{!82}
!82 = distinct !{!82, !83, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!83 = distinct !{!83, !"_ZL9evaporateR5GroupDv2_d"}
!84 = !{!85, !82}
!85 = distinct !{!85, !86, !"_ZL8flash_ofRK5GroupRK5PieceDv2_d: argument 0"}
!86 = distinct !{!86, !"_ZL8flash_ofRK5GroupRK5PieceDv2_d"}
!87 = distinct !{!87, !36}
!88 = distinct !{!88, !36}
!89 = !{!90}
!90 = distinct !{!90, !91, !"_ZL7outflowRK5GroupDv2_dS2_: argument 0"}
!91 = distinct !{!91, !"_ZL7outflowRK5GroupDv2_dS2_"}
!92 = !{!93}
!93 = distinct !{!93, !94, !"_ZL8condenseR5GroupDv2_d: argument 0"}
!94 = distinct !{!94, !"_ZL8condenseR5GroupDv2_d"}
!95 = distinct !{!95, !36}
!96 = !{!97}
!97 = distinct !{!97, !98, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!98 = distinct !{!98, !"_ZL9evaporateR5GroupDv2_d"}
!99 = !{!100, !97}
!100 = distinct !{!100, !101, !"_ZL8flash_ofRK5GroupRK5PieceDv2_d: argument 0"}
!101 = distinct !{!101, !"_ZL8flash_ofRK5GroupRK5PieceDv2_d"}
!102 = distinct !{!102, !36}
!103 = distinct !{!103, !36}
!104 = !{!31, !11, i64 2016}
!105 = distinct !{!105, !36}
!106 = distinct !{!106, !36}
!107 = distinct !{!107, !36}
!108 = distinct !{!108, !36}
!109 = distinct !{!109, !36}
!110 = distinct !{!110, !36}
!111 = distinct !{!111, !36}
!112 = distinct !{!112, !36}
!113 = distinct !{!113, !36}
!114 = distinct !{!114, !115}
!115 = !{!"llvm.loop.unroll.disable"}
!116 = distinct !{!116, !36}
!117 = !{!31, !11, i64 2000}
!118 = distinct !{!118, !36}
!119 = distinct !{!119, !36}
!120 = distinct !{!120, !36}
!121 = distinct !{!121, !36}
!122 = distinct !{!122, !36}
!123 = distinct !{!123, !36}
!124 = distinct !{!124, !36}
!125 = distinct !{!125, !36}
!126 = distinct !{!126, !36}
!127 = distinct !{!127, !36}
!128 = distinct !{!128, !36}
!129 = distinct !{!129, !36}
!130 = !{!5, !6, i64 40}
!131 = distinct !{!131, !36}
!132 = distinct !{!132, !36}
!133 = !{!5, !6, i64 56}
!134 = !{!10, !10, i64 0}
!135 = !{!5, !12, i64 168}
!136 = !{!5, !10, i64 160}
!137 = distinct !{!137, !36}
!138 = distinct !{!138, !115}
!139 = distinct !{!139, !115}
!140 = distinct !{!140, !115}
!141 = distinct !{!141, !115}
!142 = distinct !{!142, !115}
!143 = !{!5, !10, i64 80}
!144 = !{!5, !10, i64 72}
!145 = !{!5, !10, i64 96}
!146 = !{!5, !12, i64 104}
!147 = distinct !{!147, !36}
!148 = distinct !{!148, !36}
!149 = distinct !{!149, !36}
!150 = distinct !{!150, !115}
!151 = distinct !{!151, !36}
!152 = distinct !{!152, !36}
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
!163 = distinct !{!163, !115}
!164 = distinct !{!164, !36}
!165 = distinct !{!165, !36}
