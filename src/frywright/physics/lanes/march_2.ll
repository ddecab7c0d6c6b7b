; Made by scripts/lanes.py from sources of sha256 8a0e856ea36847a0ab006e0662aacc667710fe80eac8fffa4a89e7d916837fd6.
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
  %17 = add i64 %16, 1616
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
  %26 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 1528
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
  %106 = getelementptr inbounds nuw i8, ptr %1, i64 1520
  store ptr %105, ptr %106, align 16, !tbaa !37
  %107 = load i64, ptr %0, align 8, !tbaa !38
  %108 = icmp sgt i64 %107, 0
  br i1 %108, label %109, label %110

109:                                              ; preds = %104
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %113

110:                                              ; preds = %104
  %111 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %112 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #7
  store i64 0, ptr %112, align 8, !tbaa !29
  store i64 0, ptr %111, align 8, !tbaa !29
  br label %113

113:                                              ; preds = %110, %109
  %114 = load i64, ptr %25, align 16, !tbaa !26
  %115 = load i64, ptr %0, align 8, !tbaa !38
  %116 = icmp slt i64 %114, %115
  br i1 %116, label %120, label %117

117:                                              ; preds = %113
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, i64 noundef 0) #7
  %118 = getelementptr inbounds nuw i8, ptr %1, i64 1368
  store i64 0, ptr %118, align 8, !tbaa !29
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 1384
  store i64 0, ptr %119, align 8, !tbaa !29
  br label %121

120:                                              ; preds = %113
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %121

121:                                              ; preds = %117, %120, %3
  %122 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %125 = load i64, ptr %123, align 8, !tbaa !39
  %126 = load i64, ptr %124, align 8, !tbaa !40
  %127 = sub nsw i64 %125, %126
  %128 = icmp slt i64 %127, 4
  br i1 %128, label %4767, label %129

129:                                              ; preds = %121
  %130 = getelementptr inbounds nuw i8, ptr %1, i64 1504
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 584
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 592
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %135 = getelementptr inbounds nuw i8, ptr %1, i64 1136
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 1168
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 1232
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 1312
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 1528
  %142 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %144 = getelementptr inbounds nuw i8, ptr %1, i64 608
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 480
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 496
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 976
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 1280
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 416
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 1056
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 1120
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 1264
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1008
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 992
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 944
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 1392
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 1344
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 16
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 32
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 1328
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 368
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 352
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 528
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 400
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 304
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 288
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 224
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 240
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 208
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 272
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 1184
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 1072
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 624
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 600
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 1248
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 1200
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 432
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 1296
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 1104
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 464
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 1520
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 1040
  %222 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 1440
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %225 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %226 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 1488
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 544
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 1448
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 1496
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 1432
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 1496
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 1512
  br label %264

264:                                              ; preds = %521, %129
  %265 = phi i1 [ true, %129 ], [ %524, %521 ]
  %266 = phi i64 [ 0, %129 ], [ %522, %521 ]
  %267 = phi i1 [ true, %129 ], [ %523, %521 ]
  %268 = getelementptr inbounds nuw i64, ptr %122, i64 %266
  %269 = load i64, ptr %268, align 8, !tbaa !29
  %270 = icmp eq i64 %269, 0
  br i1 %270, label %519, label %271

271:                                              ; preds = %264
  %272 = getelementptr inbounds nuw [2 x double], ptr %130, i64 0, i64 %266
  %273 = load double, ptr %272, align 8, !tbaa !41
  %274 = fcmp oeq double %273, 0.000000e+00
  br i1 %274, label %519, label %275

275:                                              ; preds = %271
  %276 = load i64, ptr %131, align 8, !tbaa !20
  %277 = load i64, ptr %132, align 16, !tbaa !21
  %278 = getelementptr inbounds nuw [2 x i64], ptr %133, i64 0, i64 %266
  %279 = load i64, ptr %278, align 8, !tbaa !29
  %280 = load ptr, ptr %134, align 8, !tbaa !42
  %281 = mul nsw i64 %279, 40
  %282 = getelementptr inbounds i8, ptr %280, i64 %281
  %283 = getelementptr inbounds nuw double, ptr %135, i64 %266
  %284 = load double, ptr %283, align 8, !tbaa !41
  store double %284, ptr %282, align 8, !tbaa !41
  %285 = getelementptr inbounds nuw double, ptr %136, i64 %266
  %286 = load double, ptr %285, align 8, !tbaa !41
  %287 = getelementptr inbounds nuw i8, ptr %282, i64 8
  store double %286, ptr %287, align 8, !tbaa !41
  %288 = getelementptr inbounds nuw double, ptr %137, i64 %266
  %289 = load double, ptr %288, align 8, !tbaa !41
  %290 = getelementptr inbounds nuw i8, ptr %282, i64 16
  store double %289, ptr %290, align 8, !tbaa !41
  %291 = getelementptr inbounds nuw double, ptr %138, i64 %266
  %292 = load double, ptr %291, align 8, !tbaa !41
  %293 = getelementptr inbounds nuw i8, ptr %282, i64 24
  store double %292, ptr %293, align 8, !tbaa !41
  %294 = getelementptr inbounds nuw double, ptr %139, i64 %266
  %295 = load double, ptr %294, align 8, !tbaa !41
  %296 = getelementptr inbounds nuw i8, ptr %282, i64 32
  store double %295, ptr %296, align 8, !tbaa !41
  %297 = load i64, ptr %140, align 16, !tbaa !16
  %298 = icmp sgt i64 %297, 0
  br i1 %298, label %299, label %503

299:                                              ; preds = %275
  %300 = load ptr, ptr %141, align 8, !tbaa !27
  %301 = load ptr, ptr %142, align 8, !tbaa !43
  %302 = mul nsw i64 %297, %279
  %303 = mul i64 %276, 3
  %304 = load ptr, ptr %143, align 8, !tbaa !44
  %305 = icmp sgt i64 %276, 0
  %306 = getelementptr inbounds nuw double, ptr %4, i64 %266
  %307 = shl i64 %276, 4
  %308 = getelementptr inbounds nuw double, ptr %5, i64 %266
  %309 = icmp sgt i64 %277, 0
  %310 = and i64 %277, 1
  %311 = icmp eq i64 %277, 1
  %312 = and i64 %277, 9223372036854775806
  %313 = icmp eq i64 %310, 0
  br label %314

314:                                              ; preds = %411, %299
  %315 = phi i64 [ 0, %299 ], [ %478, %411 ]
  %316 = getelementptr inbounds nuw %struct.Piece, ptr %300, i64 %315
  %317 = getelementptr inbounds nuw i8, ptr %316, i64 384
  %318 = getelementptr inbounds nuw double, ptr %317, i64 %266
  %319 = load double, ptr %318, align 8, !tbaa !41
  %320 = getelementptr inbounds nuw i8, ptr %316, i64 1088
  %321 = getelementptr inbounds nuw double, ptr %320, i64 %266
  %322 = load double, ptr %321, align 8, !tbaa !41
  %323 = add nsw i64 %315, %302
  %324 = mul i64 %303, %323
  %325 = getelementptr inbounds double, ptr %301, i64 %324
  %326 = mul nsw i64 %323, 40
  %327 = getelementptr inbounds i8, ptr %304, i64 %326
  br i1 %305, label %328, label %345

328:                                              ; preds = %314
  %329 = getelementptr inbounds nuw i8, ptr %316, i64 1904
  %330 = load ptr, ptr %329, align 16, !tbaa !45
  %331 = getelementptr inbounds nuw i8, ptr %316, i64 1936
  %332 = load ptr, ptr %331, align 16, !tbaa !46
  %333 = getelementptr inbounds nuw double, ptr %332, i64 %266
  %334 = getelementptr double, ptr %325, i64 %276
  %335 = getelementptr inbounds nuw i8, ptr %316, i64 1104
  %336 = getelementptr inbounds nuw i8, ptr %316, i64 1992
  %337 = load ptr, ptr %336, align 8, !tbaa !47
  %338 = getelementptr inbounds nuw i8, ptr %316, i64 1888
  %339 = load i64, ptr %338, align 16, !tbaa !30
  %340 = getelementptr inbounds nuw i8, ptr %316, i64 96
  %341 = getelementptr inbounds nuw i8, ptr %316, i64 112
  %342 = getelementptr inbounds nuw i8, ptr %316, i64 128
  %343 = getelementptr inbounds nuw i8, ptr %316, i64 160
  %344 = getelementptr i8, ptr %325, i64 %307
  br label %358

345:                                              ; preds = %387, %314
  %346 = phi double [ %322, %314 ], [ %394, %387 ]
  br i1 %309, label %347, label %411

347:                                              ; preds = %345
  %348 = getelementptr inbounds nuw i8, ptr %316, i64 2072
  %349 = load ptr, ptr %348, align 8, !tbaa !48
  %350 = getelementptr inbounds nuw double, ptr %349, i64 %266
  %351 = getelementptr inbounds nuw i8, ptr %316, i64 192
  %352 = getelementptr inbounds nuw double, ptr %351, i64 %266
  %353 = load double, ptr %352, align 8, !tbaa !41
  %354 = getelementptr inbounds nuw i8, ptr %316, i64 2024
  %355 = load ptr, ptr %354, align 8, !tbaa !49
  %356 = getelementptr inbounds nuw double, ptr %355, i64 %266
  %357 = load double, ptr %350, align 8, !tbaa !41
  br i1 %311, label %397, label %480

358:                                              ; preds = %387, %328
  %359 = phi double [ %322, %328 ], [ %394, %387 ]
  %360 = phi i64 [ 0, %328 ], [ %395, %387 ]
  %361 = getelementptr inbounds nuw <2 x double>, ptr %330, i64 %360
  %362 = getelementptr inbounds nuw double, ptr %361, i64 %266
  %363 = load double, ptr %362, align 8, !tbaa !41
  %364 = getelementptr inbounds nuw double, ptr %325, i64 %360
  store double %363, ptr %364, align 8, !tbaa !41
  %365 = getelementptr inbounds nuw <2 x double>, ptr %333, i64 %360
  %366 = load double, ptr %365, align 8, !tbaa !41
  %367 = getelementptr double, ptr %334, i64 %360
  store double %366, ptr %367, align 8, !tbaa !41
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  %368 = load <2 x double>, ptr %335, align 16, !tbaa !25
  %369 = getelementptr inbounds nuw <2 x double>, ptr %337, i64 %360
  %370 = load <2 x double>, ptr %369, align 16, !tbaa !25
  %371 = icmp slt i64 %360, %339
  %372 = load <2 x double>, ptr %317, align 16
  %373 = fsub <2 x double> %368, %372
  %374 = select i1 %371, <2 x double> %372, <2 x double> %373
  %375 = fmul <2 x double> %370, %374
  store <2 x double> %375, ptr %4, align 16, !tbaa !25
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %5) #8
  %376 = load <2 x double>, ptr %361, align 16, !tbaa !25
  br i1 %371, label %377, label %379

377:                                              ; preds = %358
  %378 = load <2 x double>, ptr %343, align 16, !tbaa !25
  br label %387

379:                                              ; preds = %358
  %380 = load <2 x double>, ptr %340, align 16, !tbaa !25
  %381 = load <2 x double>, ptr %341, align 16, !tbaa !25
  %382 = load <2 x double>, ptr %342, align 16, !tbaa !25
  %383 = fmul <2 x double> %376, %382
  %384 = fmul <2 x double> %383, splat (double 0x3FD5555555555555)
  %385 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %381, <2 x double> splat (double 5.000000e-01), <2 x double> %384)
  %386 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %376, <2 x double> %385, <2 x double> %380)
  br label %387

387:                                              ; preds = %379, %377
  %388 = phi <2 x double> [ %378, %377 ], [ %386, %379 ]
  %389 = fmul <2 x double> %376, %388
  %390 = fmul <2 x double> %375, %389
  store <2 x double> %390, ptr %5, align 16, !tbaa !25
  %391 = load double, ptr %306, align 8, !tbaa !41
  %392 = getelementptr double, ptr %344, i64 %360
  store double %391, ptr %392, align 8, !tbaa !41
  %393 = load double, ptr %308, align 8, !tbaa !41
  %394 = fadd double %359, %393
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #8
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  %395 = add nuw nsw i64 %360, 1
  %396 = icmp eq i64 %395, %276
  br i1 %396, label %345, label %358, !llvm.loop !50

397:                                              ; preds = %480, %347
  %398 = phi double [ poison, %347 ], [ %500, %480 ]
  %399 = phi double [ %357, %347 ], [ %495, %480 ]
  %400 = phi double [ %346, %347 ], [ %500, %480 ]
  %401 = phi i64 [ 0, %347 ], [ %493, %480 ]
  br i1 %313, label %411, label %402

402:                                              ; preds = %397
  %403 = getelementptr <2 x double>, ptr %350, i64 %401
  %404 = getelementptr i8, ptr %403, i64 16
  %405 = load double, ptr %404, align 8, !tbaa !41
  %406 = fsub double %405, %399
  %407 = fmul double %353, %406
  %408 = getelementptr inbounds nuw <2 x double>, ptr %356, i64 %401
  %409 = load double, ptr %408, align 8, !tbaa !41
  %410 = tail call double @llvm.fmuladd.f64(double %407, double %409, double %400)
  br label %411

411:                                              ; preds = %402, %397, %345
  %412 = phi double [ %346, %345 ], [ %398, %397 ], [ %410, %402 ]
  %413 = getelementptr inbounds nuw i8, ptr %316, i64 240
  %414 = getelementptr inbounds nuw double, ptr %413, i64 %266
  %415 = load double, ptr %414, align 8, !tbaa !41
  %416 = getelementptr inbounds nuw i8, ptr %316, i64 96
  %417 = getelementptr inbounds nuw double, ptr %416, i64 %266
  %418 = load double, ptr %417, align 8, !tbaa !41
  %419 = getelementptr inbounds nuw i8, ptr %316, i64 112
  %420 = getelementptr inbounds nuw double, ptr %419, i64 %266
  %421 = load double, ptr %420, align 8, !tbaa !41
  %422 = getelementptr inbounds nuw i8, ptr %316, i64 128
  %423 = getelementptr inbounds nuw double, ptr %422, i64 %266
  %424 = load double, ptr %423, align 8, !tbaa !41
  %425 = fmul double %415, %424
  %426 = fdiv double %425, 3.000000e+00
  %427 = tail call double @llvm.fmuladd.f64(double %421, double 5.000000e-01, double %426)
  %428 = tail call double @llvm.fmuladd.f64(double %415, double %427, double %418)
  %429 = fmul double %415, %428
  %430 = getelementptr inbounds nuw i8, ptr %316, i64 352
  %431 = getelementptr inbounds nuw double, ptr %430, i64 %266
  %432 = load double, ptr %431, align 8, !tbaa !41
  %433 = fsub double %432, %319
  %434 = getelementptr inbounds nuw i8, ptr %316, i64 160
  %435 = getelementptr inbounds nuw double, ptr %434, i64 %266
  %436 = load double, ptr %435, align 8, !tbaa !41
  %437 = fmul double %319, %436
  %438 = fmul double %415, %437
  %439 = tail call double @llvm.fmuladd.f64(double %433, double %429, double %438)
  %440 = getelementptr inbounds nuw i8, ptr %316, i64 1024
  %441 = getelementptr inbounds nuw double, ptr %440, i64 %266
  %442 = load double, ptr %441, align 8, !tbaa !41
  %443 = getelementptr inbounds nuw i8, ptr %316, i64 1040
  %444 = getelementptr inbounds nuw double, ptr %443, i64 %266
  %445 = load double, ptr %444, align 8, !tbaa !41
  %446 = fsub double %442, %445
  %447 = fsub double %412, %439
  %448 = fsub double %446, %447
  %449 = fcmp ogt double %442, 0.000000e+00
  %450 = fneg double %442
  %451 = select i1 %449, double %442, double %450
  %452 = fcmp ogt double %445, 0.000000e+00
  %453 = fneg double %445
  %454 = select i1 %452, double %445, double %453
  %455 = fadd double %451, %454
  %456 = fcmp ogt double %448, 0.000000e+00
  %457 = fneg double %448
  %458 = select i1 %456, double %448, double %457
  %459 = fcmp ogt double %455, 1.000000e+00
  %460 = select i1 %459, double %455, double 1.000000e+00
  %461 = fdiv double %458, %460
  store double %461, ptr %327, align 8, !tbaa !41
  %462 = getelementptr inbounds nuw i8, ptr %316, i64 1008
  %463 = getelementptr inbounds nuw double, ptr %462, i64 %266
  %464 = load double, ptr %463, align 8, !tbaa !41
  %465 = getelementptr inbounds nuw i8, ptr %327, i64 8
  store double %464, ptr %465, align 8, !tbaa !41
  %466 = getelementptr inbounds nuw i8, ptr %316, i64 960
  %467 = getelementptr inbounds nuw double, ptr %466, i64 %266
  %468 = load double, ptr %467, align 8, !tbaa !41
  %469 = getelementptr inbounds nuw i8, ptr %327, i64 16
  store double %468, ptr %469, align 8, !tbaa !41
  %470 = getelementptr inbounds nuw i8, ptr %316, i64 976
  %471 = getelementptr inbounds nuw double, ptr %470, i64 %266
  %472 = load double, ptr %471, align 8, !tbaa !41
  %473 = getelementptr inbounds nuw i8, ptr %327, i64 24
  store double %472, ptr %473, align 8, !tbaa !41
  %474 = getelementptr inbounds nuw i8, ptr %316, i64 944
  %475 = getelementptr inbounds nuw double, ptr %474, i64 %266
  %476 = load double, ptr %475, align 8, !tbaa !41
  %477 = getelementptr inbounds nuw i8, ptr %327, i64 32
  store double %476, ptr %477, align 8, !tbaa !41
  %478 = add nuw nsw i64 %315, 1
  %479 = icmp eq i64 %478, %297
  br i1 %479, label %503, label %314, !llvm.loop !51

480:                                              ; preds = %347, %480
  %481 = phi double [ %495, %480 ], [ %357, %347 ]
  %482 = phi double [ %500, %480 ], [ %346, %347 ]
  %483 = phi i64 [ %493, %480 ], [ 0, %347 ]
  %484 = phi i64 [ %501, %480 ], [ 0, %347 ]
  %485 = or disjoint i64 %483, 1
  %486 = getelementptr inbounds nuw <2 x double>, ptr %350, i64 %485
  %487 = load double, ptr %486, align 8, !tbaa !41
  %488 = fsub double %487, %481
  %489 = fmul double %353, %488
  %490 = getelementptr inbounds nuw <2 x double>, ptr %356, i64 %483
  %491 = load double, ptr %490, align 8, !tbaa !41
  %492 = tail call double @llvm.fmuladd.f64(double %489, double %491, double %482)
  %493 = add nuw nsw i64 %483, 2
  %494 = getelementptr inbounds nuw <2 x double>, ptr %350, i64 %493
  %495 = load double, ptr %494, align 8, !tbaa !41
  %496 = fsub double %495, %487
  %497 = fmul double %353, %496
  %498 = getelementptr inbounds nuw <2 x double>, ptr %356, i64 %485
  %499 = load double, ptr %498, align 8, !tbaa !41
  %500 = tail call double @llvm.fmuladd.f64(double %497, double %499, double %492)
  %501 = add i64 %484, 2
  %502 = icmp eq i64 %501, %312
  br i1 %502, label %397, label %480, !llvm.loop !52

503:                                              ; preds = %411, %275
  %504 = load i64, ptr %144, align 16, !tbaa !26
  %505 = load i64, ptr %0, align 8, !tbaa !38
  %506 = icmp slt i64 %504, %505
  br i1 %506, label %509, label %507

507:                                              ; preds = %503
  store i64 0, ptr %268, align 8, !tbaa !29
  %508 = getelementptr inbounds nuw i64, ptr %145, i64 %266
  store i64 0, ptr %508, align 8, !tbaa !29
  br label %516

509:                                              ; preds = %503
  %510 = trunc nuw nsw i64 %266 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %510) #7
  %511 = load i64, ptr %268, align 8, !tbaa !29
  %512 = icmp eq i64 %511, 0
  br i1 %512, label %516, label %513

513:                                              ; preds = %509
  %514 = load double, ptr %272, align 8, !tbaa !41
  %515 = fcmp oeq double %514, 0.000000e+00
  br label %516

516:                                              ; preds = %507, %513, %509
  %517 = phi i1 [ true, %509 ], [ %515, %513 ], [ true, %507 ]
  %518 = and i1 %267, %517
  br label %519

519:                                              ; preds = %516, %271, %264
  %520 = phi i1 [ %267, %271 ], [ %518, %516 ], [ %267, %264 ]
  br i1 %265, label %521, label %525

521:                                              ; preds = %519, %526
  %522 = phi i64 [ 1, %519 ], [ 0, %526 ]
  %523 = phi i1 [ %520, %519 ], [ true, %526 ]
  %524 = xor i1 %265, true
  br label %264, !llvm.loop !53

525:                                              ; preds = %519
  br i1 %520, label %531, label %526

526:                                              ; preds = %4748, %4766, %4763, %3150, %3473, %525
  %527 = load i64, ptr %123, align 8, !tbaa !39
  %528 = load i64, ptr %124, align 8, !tbaa !40
  %529 = sub nsw i64 %527, %528
  %530 = icmp slt i64 %529, 4
  br i1 %530, label %4767, label %521

531:                                              ; preds = %525
  %532 = load <2 x i64>, ptr %122, align 16, !tbaa !25
  %533 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %532)
  %534 = icmp eq i64 %533, 0
  br i1 %534, label %4767, label %535

535:                                              ; preds = %531
  %536 = load <2 x i64>, ptr %145, align 16, !tbaa !25
  %537 = and <2 x i64> %536, %532
  %538 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %537)
  %539 = icmp eq i64 %538, 0
  %540 = load i64, ptr %140, align 16, !tbaa !16
  br i1 %539, label %1135, label %541

541:                                              ; preds = %535
  %542 = load <2 x double>, ptr %146, align 16, !tbaa !25
  %543 = load <2 x double>, ptr %147, align 16, !tbaa !25
  %544 = load <2 x double>, ptr %148, align 16, !tbaa !25
  %545 = load <2 x double>, ptr %149, align 16, !tbaa !25
  %546 = fsub <2 x double> %544, %545
  %547 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %543, <2 x double> %546, <2 x double> %542)
  %548 = load <2 x double>, ptr %150, align 16, !tbaa !25
  %549 = fcmp une <2 x double> %548, splat (double 2.000000e+00)
  %550 = select <2 x i1> %549, <2 x double> splat (double 1.000000e+00), <2 x double> splat (double 5.000000e-01)
  %551 = fmul <2 x double> %547, %550
  %552 = load <2 x double>, ptr %151, align 16, !tbaa !25
  %553 = load <2 x double>, ptr %152, align 16, !tbaa !25
  %554 = fcmp olt <2 x double> %552, %553
  %555 = select <2 x i1> %554, <2 x double> %552, <2 x double> %553
  %556 = fcmp olt <2 x double> %555, %551
  %557 = select <2 x i1> %556, <2 x double> %555, <2 x double> %551
  %558 = load <2 x double>, ptr %153, align 16, !tbaa !25
  %559 = load <2 x double>, ptr %154, align 16, !tbaa !25
  %560 = fadd <2 x double> %558, %559
  %561 = fsub <2 x double> %560, %544
  %562 = fmul <2 x double> %557, splat (double 0x3FF000010C6F7A0B)
  %563 = fcmp ole <2 x double> %561, %562
  %564 = load <2 x double>, ptr %155, align 16, !tbaa !25
  %565 = fcmp ogt <2 x double> %564, %557
  %566 = select <2 x i1> %565, <2 x double> %564, <2 x double> %557
  %567 = icmp ne <2 x i64> %537, zeroinitializer
  %568 = select <2 x i1> %563, <2 x i1> %567, <2 x i1> zeroinitializer
  %569 = select <2 x i1> %568, <2 x double> %566, <2 x double> %564
  store <2 x double> %569, ptr %155, align 16, !tbaa !25
  %570 = fmul <2 x double> %557, splat (double 2.000000e+00)
  %571 = fcmp uge <2 x double> %561, %570
  %572 = fmul <2 x double> %561, splat (double 5.000000e-01)
  %573 = select <2 x i1> %571, <2 x double> %557, <2 x double> %572
  %574 = select <2 x i1> %563, <2 x double> %561, <2 x double> %573
  %575 = icmp sgt i64 %540, 0
  %576 = load <2 x double>, ptr %156, align 16, !tbaa !25
  br i1 %575, label %577, label %624

577:                                              ; preds = %541
  %578 = load ptr, ptr %141, align 8, !tbaa !27
  br label %579

579:                                              ; preds = %577, %579
  %580 = phi <2 x double> [ %574, %577 ], [ %621, %579 ]
  %581 = phi i64 [ 0, %577 ], [ %622, %579 ]
  %582 = getelementptr inbounds nuw %struct.Piece, ptr %578, i64 %581
  %583 = getelementptr inbounds nuw i8, ptr %582, i64 944
  %584 = load <2 x double>, ptr %583, align 16, !tbaa !25
  %585 = getelementptr inbounds nuw i8, ptr %582, i64 368
  %586 = load <2 x double>, ptr %585, align 16, !tbaa !25
  %587 = fsub <2 x double> %584, %586
  %588 = getelementptr inbounds nuw i8, ptr %582, i64 208
  %589 = load <2 x double>, ptr %588, align 16, !tbaa !25
  %590 = fmul <2 x double> %587, %589
  %591 = getelementptr inbounds nuw i8, ptr %582, i64 400
  %592 = load <2 x double>, ptr %591, align 16, !tbaa !25
  %593 = getelementptr inbounds nuw i8, ptr %582, i64 1008
  %594 = load <2 x double>, ptr %593, align 16, !tbaa !25
  %595 = fsub <2 x double> %592, %594
  %596 = getelementptr inbounds nuw i8, ptr %582, i64 1840
  %597 = load <2 x i64>, ptr %596, align 16, !tbaa !25
  %598 = getelementptr inbounds nuw i8, ptr %582, i64 1824
  %599 = load <2 x double>, ptr %598, align 16, !tbaa !25
  %600 = fcmp une <2 x double> %599, splat (double 1.000000e+00)
  %601 = select <2 x i1> %600, <2 x double> %590, <2 x double> %595
  %602 = getelementptr inbounds nuw i8, ptr %582, i64 960
  %603 = load <2 x double>, ptr %602, align 16, !tbaa !25
  %604 = icmp eq <2 x i64> %597, zeroinitializer
  %605 = select <2 x i1> %604, <2 x double> %603, <2 x double> %601
  %606 = getelementptr inbounds nuw i8, ptr %582, i64 1408
  %607 = load <2 x double>, ptr %606, align 16, !tbaa !25
  %608 = getelementptr inbounds nuw i8, ptr %582, i64 1792
  %609 = load <2 x double>, ptr %608, align 16, !tbaa !25
  %610 = fdiv <2 x double> %609, %576
  %611 = select <2 x i1> %604, <2 x double> %610, <2 x double> zeroinitializer
  %612 = fsub <2 x double> %607, %611
  %613 = fcmp ule <2 x double> %605, zeroinitializer
  %614 = fcmp ule <2 x double> %612, zeroinitializer
  %615 = or <2 x i1> %613, %614
  %616 = fdiv <2 x double> %605, %612
  %617 = fcmp ogt <2 x double> %616, splat (double 1.000000e-03)
  %618 = select <2 x i1> %617, <2 x double> %616, <2 x double> splat (double 1.000000e-03)
  %619 = fcmp olt <2 x double> %580, %618
  %620 = select <2 x i1> %615, <2 x i1> splat (i1 true), <2 x i1> %619
  %621 = select <2 x i1> %620, <2 x double> %580, <2 x double> %618
  %622 = add nuw nsw i64 %581, 1
  %623 = icmp eq i64 %622, %540
  br i1 %623, label %624, label %579, !llvm.loop !54

624:                                              ; preds = %579, %541
  %625 = phi <2 x double> [ %574, %541 ], [ %621, %579 ]
  %626 = load <2 x double>, ptr %157, align 16, !tbaa !25
  %627 = icmp eq <2 x i64> %537, zeroinitializer
  %628 = select <2 x i1> %627, <2 x double> %626, <2 x double> %625
  store <2 x double> %628, ptr %157, align 16, !tbaa !25
  %629 = load <2 x i64>, ptr %158, align 16, !tbaa !25
  %630 = fdiv <2 x double> %628, %576
  %631 = fdiv <2 x double> splat (double 1.000000e+00), %628
  %632 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %630, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %633 = fadd <2 x double> %630, splat (double 1.000000e+00)
  %634 = fdiv <2 x double> %632, %633
  %635 = fmul <2 x double> %631, %634
  %636 = icmp eq <2 x i64> %629, zeroinitializer
  %637 = select <2 x i1> %636, <2 x double> %635, <2 x double> %631
  %638 = fneg <2 x double> %631
  %639 = fneg <2 x double> %633
  %640 = fmul <2 x double> %631, %639
  %641 = select <2 x i1> %636, <2 x double> %640, <2 x double> %638
  %642 = fmul <2 x double> %630, %630
  %643 = fdiv <2 x double> %642, %633
  %644 = fmul <2 x double> %631, %643
  %645 = select <2 x i1> %636, <2 x double> %644, <2 x double> zeroinitializer
  %646 = load <2 x double>, ptr %159, align 16, !tbaa !25
  %647 = select <2 x i1> %627, <2 x double> %646, <2 x double> %637
  store <2 x double> %647, ptr %159, align 16, !tbaa !25
  %648 = load <2 x double>, ptr %160, align 16, !tbaa !25
  %649 = select <2 x i1> %627, <2 x double> %648, <2 x double> %641
  store <2 x double> %649, ptr %160, align 16, !tbaa !25
  %650 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %651 = select <2 x i1> %627, <2 x double> %650, <2 x double> %645
  store <2 x double> %651, ptr %161, align 16, !tbaa !25
  %652 = select <2 x i1> %636, <2 x double> %630, <2 x double> zeroinitializer
  %653 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %654 = load <2 x double>, ptr %164, align 16, !tbaa !25
  %655 = fsub <2 x double> %653, %654
  %656 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %652, <2 x double> %655, <2 x double> %653)
  %657 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %658 = select <2 x i1> %627, <2 x double> %657, <2 x double> %656
  %659 = load <2 x double>, ptr %231, align 16, !tbaa !25
  %660 = load <2 x double>, ptr %232, align 16, !tbaa !25
  %661 = fsub <2 x double> %659, %660
  %662 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %652, <2 x double> %661, <2 x double> %659)
  %663 = load <2 x double>, ptr %230, align 16, !tbaa !25
  %664 = select <2 x i1> %627, <2 x double> %663, <2 x double> %662
  store <2 x double> %664, ptr %230, align 16, !tbaa !25
  %665 = load <2 x double>, ptr %234, align 16, !tbaa !25
  %666 = load <2 x double>, ptr %235, align 16, !tbaa !25
  %667 = fsub <2 x double> %665, %666
  %668 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %652, <2 x double> %667, <2 x double> %665)
  %669 = load <2 x double>, ptr %233, align 16, !tbaa !25
  %670 = select <2 x i1> %627, <2 x double> %669, <2 x double> %668
  store <2 x double> %670, ptr %233, align 16, !tbaa !25
  %671 = load <2 x double>, ptr %237, align 16, !tbaa !25
  %672 = load <2 x double>, ptr %238, align 16, !tbaa !25
  %673 = fsub <2 x double> %671, %672
  %674 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %652, <2 x double> %673, <2 x double> %671)
  %675 = load <2 x double>, ptr %236, align 16, !tbaa !25
  %676 = select <2 x i1> %627, <2 x double> %675, <2 x double> %674
  store <2 x double> %676, ptr %236, align 16, !tbaa !25
  %677 = load <2 x double>, ptr %240, align 16, !tbaa !25
  %678 = load <2 x double>, ptr %241, align 16, !tbaa !25
  %679 = fsub <2 x double> %677, %678
  %680 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %652, <2 x double> %679, <2 x double> %677)
  %681 = load <2 x double>, ptr %239, align 16, !tbaa !25
  %682 = select <2 x i1> %627, <2 x double> %681, <2 x double> %680
  store <2 x double> %682, ptr %239, align 16, !tbaa !25
  %683 = load <2 x double>, ptr %243, align 16, !tbaa !25
  %684 = load <2 x double>, ptr %244, align 16, !tbaa !25
  %685 = fsub <2 x double> %683, %684
  %686 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %652, <2 x double> %685, <2 x double> %683)
  %687 = load <2 x double>, ptr %242, align 16, !tbaa !25
  %688 = select <2 x i1> %627, <2 x double> %687, <2 x double> %686
  store <2 x double> %688, ptr %242, align 16, !tbaa !25
  %689 = load <2 x i64>, ptr %165, align 16, !tbaa !25
  %690 = load <2 x double>, ptr %166, align 16, !tbaa !25
  %691 = icmp eq <2 x i64> %689, zeroinitializer
  %692 = select <2 x i1> %691, <2 x double> zeroinitializer, <2 x double> %690
  %693 = load <2 x double>, ptr %167, align 16, !tbaa !25
  %694 = fsub <2 x double> %692, %693
  %695 = load <2 x double>, ptr %1, align 16, !tbaa !25
  %696 = load <2 x double>, ptr %168, align 16, !tbaa !25
  %697 = load <2 x double>, ptr %169, align 16, !tbaa !25
  %698 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %697, <2 x double> %653, <2 x double> %696)
  %699 = load <2 x double>, ptr %170, align 16, !tbaa !25
  %700 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %695, <2 x double> %698, <2 x double> %699)
  %701 = fdiv <2 x double> %694, %700
  %702 = and <2 x i64> %629, %537
  %703 = load <2 x double>, ptr %171, align 16, !tbaa !25
  %704 = fcmp une <2 x double> %703, zeroinitializer
  %705 = load <2 x double>, ptr %157, align 16, !tbaa !25
  %706 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %705, <2 x double> %701, <2 x double> %653)
  %707 = icmp eq <2 x i64> %702, zeroinitializer
  %708 = select <2 x i1> %704, <2 x i1> splat (i1 true), <2 x i1> %707
  %709 = select <2 x i1> %708, <2 x double> %658, <2 x double> %706
  store <2 x double> %709, ptr %162, align 16, !tbaa !25
  %710 = load i64, ptr %140, align 16, !tbaa !16
  %711 = icmp sgt i64 %710, 0
  br i1 %711, label %712, label %1122

712:                                              ; preds = %624, %1085
  %713 = phi i64 [ %1086, %1085 ], [ 0, %624 ]
  %714 = load ptr, ptr %141, align 8, !tbaa !27
  %715 = getelementptr inbounds nuw %struct.Piece, ptr %714, i64 %713
  %716 = load <2 x double>, ptr %157, align 16, !tbaa !25
  %717 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %718 = getelementptr inbounds nuw i8, ptr %715, i64 1856
  %719 = load <2 x i64>, ptr %718, align 16, !tbaa !25
  %720 = fdiv <2 x double> %716, %717
  %721 = fdiv <2 x double> splat (double 1.000000e+00), %716
  %722 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %720, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %723 = fadd <2 x double> %720, splat (double 1.000000e+00)
  %724 = fdiv <2 x double> %722, %723
  %725 = fmul <2 x double> %721, %724
  %726 = icmp eq <2 x i64> %719, zeroinitializer
  %727 = select <2 x i1> %726, <2 x double> %725, <2 x double> %721
  %728 = fneg <2 x double> %721
  %729 = fneg <2 x double> %723
  %730 = fmul <2 x double> %721, %729
  %731 = select <2 x i1> %726, <2 x double> %730, <2 x double> %728
  %732 = fmul <2 x double> %720, %720
  %733 = fdiv <2 x double> %732, %723
  %734 = fmul <2 x double> %721, %733
  %735 = select <2 x i1> %726, <2 x double> %734, <2 x double> zeroinitializer
  %736 = getelementptr inbounds nuw i8, ptr %715, i64 1312
  %737 = load <2 x double>, ptr %736, align 16, !tbaa !25
  %738 = select <2 x i1> %627, <2 x double> %737, <2 x double> %727
  store <2 x double> %738, ptr %736, align 16, !tbaa !25
  %739 = getelementptr inbounds nuw i8, ptr %715, i64 1328
  %740 = load <2 x double>, ptr %739, align 16, !tbaa !25
  %741 = select <2 x i1> %627, <2 x double> %740, <2 x double> %731
  store <2 x double> %741, ptr %739, align 16, !tbaa !25
  %742 = getelementptr inbounds nuw i8, ptr %715, i64 1344
  %743 = load <2 x double>, ptr %742, align 16, !tbaa !25
  %744 = select <2 x i1> %627, <2 x double> %743, <2 x double> %735
  store <2 x double> %744, ptr %742, align 16, !tbaa !25
  %745 = load <2 x double>, ptr %157, align 16, !tbaa !25
  %746 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %747 = fdiv <2 x double> %745, %746
  %748 = select <2 x i1> %726, <2 x double> %747, <2 x double> zeroinitializer
  %749 = getelementptr inbounds nuw i8, ptr %715, i64 736
  %750 = getelementptr inbounds nuw i8, ptr %715, i64 928
  %751 = getelementptr inbounds nuw i8, ptr %715, i64 1120
  %752 = load <2 x double>, ptr %750, align 16, !tbaa !25
  %753 = load <2 x double>, ptr %751, align 16, !tbaa !25
  %754 = fsub <2 x double> %752, %753
  %755 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %754, <2 x double> %752)
  %756 = load <2 x double>, ptr %749, align 16, !tbaa !25
  %757 = select <2 x i1> %627, <2 x double> %756, <2 x double> %755
  store <2 x double> %757, ptr %749, align 16, !tbaa !25
  %758 = getelementptr inbounds nuw i8, ptr %715, i64 752
  %759 = getelementptr inbounds nuw i8, ptr %715, i64 944
  %760 = load <2 x double>, ptr %759, align 16, !tbaa !25
  %761 = getelementptr inbounds nuw i8, ptr %715, i64 1136
  %762 = load <2 x double>, ptr %761, align 16, !tbaa !25
  %763 = fsub <2 x double> %760, %762
  %764 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %763, <2 x double> %760)
  %765 = load <2 x double>, ptr %758, align 16, !tbaa !25
  %766 = select <2 x i1> %627, <2 x double> %765, <2 x double> %764
  store <2 x double> %766, ptr %758, align 16, !tbaa !25
  %767 = getelementptr inbounds nuw i8, ptr %715, i64 768
  %768 = getelementptr inbounds nuw i8, ptr %715, i64 960
  %769 = load <2 x double>, ptr %768, align 16, !tbaa !25
  %770 = getelementptr inbounds nuw i8, ptr %715, i64 1152
  %771 = load <2 x double>, ptr %770, align 16, !tbaa !25
  %772 = fsub <2 x double> %769, %771
  %773 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %772, <2 x double> %769)
  %774 = load <2 x double>, ptr %767, align 16, !tbaa !25
  %775 = select <2 x i1> %627, <2 x double> %774, <2 x double> %773
  store <2 x double> %775, ptr %767, align 16, !tbaa !25
  %776 = getelementptr inbounds nuw i8, ptr %715, i64 784
  %777 = getelementptr inbounds nuw i8, ptr %715, i64 976
  %778 = load <2 x double>, ptr %777, align 16, !tbaa !25
  %779 = getelementptr inbounds nuw i8, ptr %715, i64 1168
  %780 = load <2 x double>, ptr %779, align 16, !tbaa !25
  %781 = fsub <2 x double> %778, %780
  %782 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %781, <2 x double> %778)
  %783 = load <2 x double>, ptr %776, align 16, !tbaa !25
  %784 = select <2 x i1> %627, <2 x double> %783, <2 x double> %782
  store <2 x double> %784, ptr %776, align 16, !tbaa !25
  %785 = getelementptr inbounds nuw i8, ptr %715, i64 800
  %786 = getelementptr inbounds nuw i8, ptr %715, i64 992
  %787 = load <2 x double>, ptr %786, align 16, !tbaa !25
  %788 = getelementptr inbounds nuw i8, ptr %715, i64 1184
  %789 = load <2 x double>, ptr %788, align 16, !tbaa !25
  %790 = fsub <2 x double> %787, %789
  %791 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %790, <2 x double> %787)
  %792 = load <2 x double>, ptr %785, align 16, !tbaa !25
  %793 = select <2 x i1> %627, <2 x double> %792, <2 x double> %791
  store <2 x double> %793, ptr %785, align 16, !tbaa !25
  %794 = getelementptr inbounds nuw i8, ptr %715, i64 816
  %795 = getelementptr inbounds nuw i8, ptr %715, i64 1008
  %796 = load <2 x double>, ptr %795, align 16, !tbaa !25
  %797 = getelementptr inbounds nuw i8, ptr %715, i64 1200
  %798 = load <2 x double>, ptr %797, align 16, !tbaa !25
  %799 = fsub <2 x double> %796, %798
  %800 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %799, <2 x double> %796)
  %801 = load <2 x double>, ptr %794, align 16, !tbaa !25
  %802 = select <2 x i1> %627, <2 x double> %801, <2 x double> %800
  store <2 x double> %802, ptr %794, align 16, !tbaa !25
  %803 = getelementptr inbounds nuw i8, ptr %715, i64 832
  %804 = getelementptr inbounds nuw i8, ptr %715, i64 1024
  %805 = load <2 x double>, ptr %804, align 16, !tbaa !25
  %806 = getelementptr inbounds nuw i8, ptr %715, i64 1216
  %807 = load <2 x double>, ptr %806, align 16, !tbaa !25
  %808 = fsub <2 x double> %805, %807
  %809 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %808, <2 x double> %805)
  %810 = load <2 x double>, ptr %803, align 16, !tbaa !25
  %811 = select <2 x i1> %627, <2 x double> %810, <2 x double> %809
  store <2 x double> %811, ptr %803, align 16, !tbaa !25
  %812 = getelementptr inbounds nuw i8, ptr %715, i64 848
  %813 = getelementptr inbounds nuw i8, ptr %715, i64 1040
  %814 = load <2 x double>, ptr %813, align 16, !tbaa !25
  %815 = getelementptr inbounds nuw i8, ptr %715, i64 1232
  %816 = load <2 x double>, ptr %815, align 16, !tbaa !25
  %817 = fsub <2 x double> %814, %816
  %818 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %817, <2 x double> %814)
  %819 = load <2 x double>, ptr %812, align 16, !tbaa !25
  %820 = select <2 x i1> %627, <2 x double> %819, <2 x double> %818
  store <2 x double> %820, ptr %812, align 16, !tbaa !25
  %821 = getelementptr inbounds nuw i8, ptr %715, i64 864
  %822 = getelementptr inbounds nuw i8, ptr %715, i64 1056
  %823 = load <2 x double>, ptr %822, align 16, !tbaa !25
  %824 = getelementptr inbounds nuw i8, ptr %715, i64 1248
  %825 = load <2 x double>, ptr %824, align 16, !tbaa !25
  %826 = fsub <2 x double> %823, %825
  %827 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %826, <2 x double> %823)
  %828 = load <2 x double>, ptr %821, align 16, !tbaa !25
  %829 = select <2 x i1> %627, <2 x double> %828, <2 x double> %827
  store <2 x double> %829, ptr %821, align 16, !tbaa !25
  %830 = getelementptr inbounds nuw i8, ptr %715, i64 880
  %831 = getelementptr inbounds nuw i8, ptr %715, i64 1072
  %832 = load <2 x double>, ptr %831, align 16, !tbaa !25
  %833 = getelementptr inbounds nuw i8, ptr %715, i64 1264
  %834 = load <2 x double>, ptr %833, align 16, !tbaa !25
  %835 = fsub <2 x double> %832, %834
  %836 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %835, <2 x double> %832)
  %837 = load <2 x double>, ptr %830, align 16, !tbaa !25
  %838 = select <2 x i1> %627, <2 x double> %837, <2 x double> %836
  store <2 x double> %838, ptr %830, align 16, !tbaa !25
  %839 = getelementptr inbounds nuw i8, ptr %715, i64 896
  %840 = getelementptr inbounds nuw i8, ptr %715, i64 1088
  %841 = load <2 x double>, ptr %840, align 16, !tbaa !25
  %842 = getelementptr inbounds nuw i8, ptr %715, i64 1280
  %843 = load <2 x double>, ptr %842, align 16, !tbaa !25
  %844 = fsub <2 x double> %841, %843
  %845 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %844, <2 x double> %841)
  %846 = load <2 x double>, ptr %839, align 16, !tbaa !25
  %847 = select <2 x i1> %627, <2 x double> %846, <2 x double> %845
  store <2 x double> %847, ptr %839, align 16, !tbaa !25
  %848 = load <2 x double>, ptr %749, align 16, !tbaa !25
  %849 = load <2 x double>, ptr %750, align 16, !tbaa !25
  %850 = fcmp olt <2 x double> %848, %849
  %851 = select <2 x i1> %850, <2 x double> %848, <2 x double> %849
  %852 = load <2 x double>, ptr %715, align 16, !tbaa !25
  %853 = fmul <2 x double> %852, splat (double 3.000000e-01)
  %854 = fcmp ogt <2 x double> %851, %853
  %855 = select <2 x i1> %854, <2 x double> %851, <2 x double> %853
  %856 = select <2 x i1> %627, <2 x double> %848, <2 x double> %855
  store <2 x double> %856, ptr %749, align 16, !tbaa !25
  %857 = getelementptr inbounds nuw i8, ptr %715, i64 1408
  %858 = fcmp ogt <2 x double> %829, zeroinitializer
  %859 = select <2 x i1> %858, <2 x double> %829, <2 x double> zeroinitializer
  %860 = load <2 x double>, ptr %857, align 16, !tbaa !25
  %861 = select <2 x i1> %627, <2 x double> %860, <2 x double> %859
  store <2 x double> %861, ptr %857, align 16, !tbaa !25
  %862 = load i64, ptr %131, align 8, !tbaa !20
  %863 = icmp sgt i64 %862, 0
  br i1 %863, label %864, label %878

864:                                              ; preds = %712
  %865 = getelementptr inbounds nuw i8, ptr %715, i64 1904
  %866 = getelementptr inbounds nuw i8, ptr %715, i64 1912
  %867 = getelementptr inbounds nuw i8, ptr %715, i64 1896
  %868 = getelementptr inbounds nuw i8, ptr %715, i64 1104
  %869 = getelementptr inbounds nuw i8, ptr %715, i64 1992
  %870 = getelementptr inbounds nuw i8, ptr %715, i64 1888
  %871 = getelementptr inbounds nuw i8, ptr %715, i64 384
  %872 = getelementptr inbounds nuw i8, ptr %715, i64 1296
  %873 = getelementptr inbounds nuw i8, ptr %715, i64 96
  %874 = getelementptr inbounds nuw i8, ptr %715, i64 112
  %875 = getelementptr inbounds nuw i8, ptr %715, i64 128
  %876 = getelementptr inbounds nuw i8, ptr %715, i64 160
  %877 = getelementptr inbounds nuw i8, ptr %715, i64 1920
  br label %888

878:                                              ; preds = %943, %712
  %879 = load i64, ptr %132, align 16, !tbaa !21
  %880 = icmp sgt i64 %879, 0
  br i1 %880, label %881, label %956

881:                                              ; preds = %878
  %882 = getelementptr inbounds nuw i8, ptr %715, i64 2072
  %883 = getelementptr inbounds nuw i8, ptr %715, i64 2024
  %884 = getelementptr inbounds nuw i8, ptr %715, i64 2080
  %885 = getelementptr inbounds nuw i8, ptr %715, i64 2032
  %886 = getelementptr inbounds nuw i8, ptr %715, i64 192
  %887 = getelementptr inbounds nuw i8, ptr %715, i64 2040
  br label %1089

888:                                              ; preds = %864, %943
  %889 = phi i64 [ 0, %864 ], [ %953, %943 ]
  %890 = load ptr, ptr %865, align 16, !tbaa !45
  %891 = getelementptr inbounds nuw <2 x double>, ptr %890, i64 %889
  %892 = load <2 x double>, ptr %891, align 16, !tbaa !25
  %893 = load ptr, ptr %866, align 8, !tbaa !55
  %894 = getelementptr inbounds nuw <2 x double>, ptr %893, i64 %889
  %895 = load <2 x double>, ptr %894, align 16, !tbaa !25
  %896 = fsub <2 x double> %892, %895
  %897 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %748, <2 x double> %896, <2 x double> %892)
  %898 = load ptr, ptr %867, align 8, !tbaa !56
  %899 = getelementptr inbounds nuw <2 x double>, ptr %898, i64 %889
  %900 = load <2 x double>, ptr %899, align 16, !tbaa !25
  %901 = select <2 x i1> %627, <2 x double> %900, <2 x double> %897
  store <2 x double> %901, ptr %899, align 16, !tbaa !25
  %902 = load <2 x double>, ptr %868, align 16, !tbaa !25
  %903 = load ptr, ptr %869, align 8, !tbaa !47
  %904 = getelementptr inbounds nuw <2 x double>, ptr %903, i64 %889
  %905 = load <2 x double>, ptr %904, align 16, !tbaa !25
  %906 = load i64, ptr %870, align 16, !tbaa !30
  %907 = icmp slt i64 %889, %906
  %908 = load <2 x double>, ptr %871, align 16
  %909 = fsub <2 x double> %902, %908
  %910 = select i1 %907, <2 x double> %908, <2 x double> %909
  %911 = fmul <2 x double> %905, %910
  %912 = load <2 x double>, ptr %872, align 16, !tbaa !25
  %913 = fsub <2 x double> %912, %908
  %914 = select i1 %907, <2 x double> %908, <2 x double> %913
  %915 = fmul <2 x double> %905, %914
  %916 = load <2 x double>, ptr %739, align 16, !tbaa !25
  %917 = fmul <2 x double> %916, %911
  %918 = load ptr, ptr %865, align 16, !tbaa !45
  %919 = getelementptr inbounds nuw <2 x double>, ptr %918, i64 %889
  %920 = load <2 x double>, ptr %919, align 16, !tbaa !25
  br i1 %907, label %921, label %927

921:                                              ; preds = %888
  %922 = load <2 x double>, ptr %876, align 16, !tbaa !25
  %923 = load ptr, ptr %866, align 8, !tbaa !55
  %924 = getelementptr inbounds nuw <2 x double>, ptr %923, i64 %889
  %925 = load <2 x double>, ptr %924, align 16, !tbaa !25
  %926 = fmul <2 x double> %925, %922
  br label %943

927:                                              ; preds = %888
  %928 = load <2 x double>, ptr %873, align 16, !tbaa !25
  %929 = load <2 x double>, ptr %874, align 16, !tbaa !25
  %930 = load <2 x double>, ptr %875, align 16, !tbaa !25
  %931 = fmul <2 x double> %920, %930
  %932 = fmul <2 x double> %931, splat (double 0x3FD5555555555555)
  %933 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %929, <2 x double> splat (double 5.000000e-01), <2 x double> %932)
  %934 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %920, <2 x double> %933, <2 x double> %928)
  %935 = load ptr, ptr %866, align 8, !tbaa !55
  %936 = getelementptr inbounds nuw <2 x double>, ptr %935, i64 %889
  %937 = load <2 x double>, ptr %936, align 16, !tbaa !25
  %938 = fmul <2 x double> %937, %930
  %939 = fmul <2 x double> %938, splat (double 0x3FD5555555555555)
  %940 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %929, <2 x double> splat (double 5.000000e-01), <2 x double> %939)
  %941 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %937, <2 x double> %940, <2 x double> %928)
  %942 = fmul <2 x double> %937, %941
  br label %943

943:                                              ; preds = %921, %927
  %944 = phi <2 x double> [ %922, %921 ], [ %934, %927 ]
  %945 = phi <2 x double> [ %926, %921 ], [ %942, %927 ]
  %946 = fmul <2 x double> %920, %944
  %947 = load <2 x double>, ptr %742, align 16, !tbaa !25
  %948 = fmul <2 x double> %915, %947
  %949 = fmul <2 x double> %945, %948
  %950 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %917, <2 x double> %946, <2 x double> %949)
  %951 = load ptr, ptr %877, align 16, !tbaa !57
  %952 = getelementptr inbounds nuw <2 x double>, ptr %951, i64 %889
  store <2 x double> %950, ptr %952, align 16, !tbaa !25
  %953 = add nuw nsw i64 %889, 1
  %954 = load i64, ptr %131, align 8, !tbaa !20
  %955 = icmp slt i64 %953, %954
  br i1 %955, label %888, label %878, !llvm.loop !58

956:                                              ; preds = %1089, %878
  %957 = getelementptr inbounds nuw i8, ptr %715, i64 416
  %958 = load <2 x double>, ptr %957, align 16, !tbaa !25
  %959 = fcmp ogt <2 x double> %958, zeroinitializer
  %960 = bitcast <2 x i1> %959 to i2
  %961 = icmp eq i2 %960, 0
  br i1 %961, label %962, label %966

962:                                              ; preds = %956
  %963 = getelementptr inbounds nuw i8, ptr %715, i64 1792
  %964 = load <2 x double>, ptr %963, align 16, !tbaa !25
  %965 = select <2 x i1> %627, <2 x double> %964, <2 x double> zeroinitializer
  store <2 x double> %965, ptr %963, align 16, !tbaa !25
  br label %1085

966:                                              ; preds = %956
  %967 = load <2 x double>, ptr %157, align 16, !tbaa !25
  %968 = fneg <2 x double> %967
  %969 = getelementptr inbounds nuw i8, ptr %715, i64 432
  %970 = load <2 x double>, ptr %969, align 16, !tbaa !25
  %971 = fdiv <2 x double> %968, %970
  %972 = fcmp ogt <2 x double> %971, splat (double -7.000000e+02)
  %973 = select <2 x i1> %972, <2 x double> %971, <2 x double> splat (double -7.000000e+02)
  %974 = fcmp olt <2 x double> %973, splat (double 7.000000e+02)
  %975 = select <2 x i1> %974, <2 x double> %973, <2 x double> splat (double 7.000000e+02)
  %976 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %975, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %977 = fadd <2 x double> %976, splat (double 0xC338000000000000)
  %978 = fneg <2 x double> %977
  %979 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %978, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %975)
  %980 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %978, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %979)
  %981 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %980, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %982 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %981, <2 x double> %980, <2 x double> splat (double 0x3E5AE64567F544E4))
  %983 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %982, <2 x double> %980, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %984 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %983, <2 x double> %980, <2 x double> splat (double 0x3EC71DE3A556C734))
  %985 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %984, <2 x double> %980, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %986 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %985, <2 x double> %980, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %987 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %986, <2 x double> %980, <2 x double> splat (double 0x3F56C16C16C16C17))
  %988 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %987, <2 x double> %980, <2 x double> splat (double 0x3F81111111111111))
  %989 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %988, <2 x double> %980, <2 x double> splat (double 0x3FA5555555555555))
  %990 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %989, <2 x double> %980, <2 x double> splat (double 0x3FC5555555555555))
  %991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %990, <2 x double> %980, <2 x double> splat (double 5.000000e-01))
  %992 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %991, <2 x double> %980, <2 x double> splat (double 1.000000e+00))
  %993 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %992, <2 x double> %980, <2 x double> splat (double 1.000000e+00))
  %994 = bitcast <2 x double> %976 to <2 x i64>
  %995 = shl <2 x i64> %994, splat (i64 52)
  %996 = bitcast <2 x double> %993 to <2 x i64>
  %997 = add <2 x i64> %995, %996
  %998 = bitcast <2 x i64> %997 to <2 x double>
  %999 = fsub <2 x double> splat (double 1.000000e+00), %998
  %1000 = getelementptr inbounds nuw i8, ptr %715, i64 1104
  %1001 = load <2 x double>, ptr %1000, align 16, !tbaa !25
  %1002 = getelementptr inbounds nuw i8, ptr %715, i64 1888
  %1003 = load i64, ptr %1002, align 16, !tbaa !30
  %1004 = load i64, ptr %131, align 8, !tbaa !20
  %1005 = icmp slt i64 %1003, %1004
  br i1 %1005, label %1006, label %1015

1006:                                             ; preds = %966
  %1007 = getelementptr inbounds nuw i8, ptr %715, i64 1904
  %1008 = getelementptr inbounds nuw i8, ptr %715, i64 1896
  %1009 = getelementptr inbounds nuw i8, ptr %715, i64 448
  %1010 = getelementptr inbounds nuw i8, ptr %715, i64 464
  %1011 = getelementptr inbounds nuw i8, ptr %715, i64 1936
  %1012 = getelementptr inbounds nuw i8, ptr %715, i64 1928
  %1013 = getelementptr inbounds nuw i8, ptr %715, i64 1992
  %1014 = getelementptr inbounds nuw i8, ptr %715, i64 384
  br label %1028

1015:                                             ; preds = %1028, %966
  %1016 = phi <2 x double> [ zeroinitializer, %966 ], [ %1066, %1028 ]
  %1017 = phi <2 x double> [ zeroinitializer, %966 ], [ %1081, %1028 ]
  %1018 = getelementptr inbounds nuw i8, ptr %715, i64 944
  %1019 = load <2 x double>, ptr %1018, align 16, !tbaa !25
  %1020 = fsub <2 x double> %1019, %1001
  %1021 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1016, <2 x double> %1020, <2 x double> %1017)
  %1022 = getelementptr inbounds nuw i8, ptr %715, i64 1792
  %1023 = getelementptr inbounds nuw i8, ptr %715, i64 208
  %1024 = load <2 x double>, ptr %1023, align 16, !tbaa !25
  %1025 = fmul <2 x double> %1024, %1021
  %1026 = load <2 x double>, ptr %1022, align 16, !tbaa !25
  %1027 = select <2 x i1> %627, <2 x double> %1026, <2 x double> %1025
  store <2 x double> %1027, ptr %1022, align 16, !tbaa !25
  br label %1085

1028:                                             ; preds = %1006, %1028
  %1029 = phi <2 x double> [ zeroinitializer, %1006 ], [ %1081, %1028 ]
  %1030 = phi i64 [ %1003, %1006 ], [ %1082, %1028 ]
  %1031 = load ptr, ptr %1007, align 16, !tbaa !45
  %1032 = getelementptr inbounds <2 x double>, ptr %1031, i64 %1030
  %1033 = load <2 x double>, ptr %1032, align 16, !tbaa !25
  %1034 = load ptr, ptr %1008, align 8, !tbaa !56
  %1035 = getelementptr inbounds <2 x double>, ptr %1034, i64 %1030
  %1036 = load <2 x double>, ptr %1035, align 16, !tbaa !25
  %1037 = fadd <2 x double> %1033, %1036
  %1038 = load <2 x double>, ptr %1009, align 16, !tbaa !25
  %1039 = fneg <2 x double> %1038
  %1040 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1037, <2 x double> splat (double 5.000000e-01), <2 x double> %1039)
  %1041 = load <2 x double>, ptr %1010, align 16, !tbaa !25
  %1042 = fmul <2 x double> %1040, %1041
  %1043 = fcmp ogt <2 x double> %1042, splat (double -5.000000e+00)
  %1044 = select <2 x i1> %1043, <2 x double> %1042, <2 x double> splat (double -5.000000e+00)
  %1045 = fcmp olt <2 x double> %1044, splat (double 5.000000e+00)
  %1046 = select <2 x i1> %1045, <2 x double> %1044, <2 x double> splat (double 5.000000e+00)
  %1047 = fmul <2 x double> %1046, %1046
  %1048 = fadd <2 x double> %1047, splat (double 3.780000e+02)
  %1049 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1047, <2 x double> %1048, <2 x double> splat (double 1.732500e+04))
  %1050 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1047, <2 x double> %1049, <2 x double> splat (double 1.351350e+05))
  %1051 = fmul <2 x double> %1046, %1050
  %1052 = load <2 x double>, ptr %957, align 16, !tbaa !25
  %1053 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1047, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1054 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1047, <2 x double> %1053, <2 x double> splat (double 6.237000e+04))
  %1055 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1047, <2 x double> %1054, <2 x double> splat (double 1.351350e+05))
  %1056 = fdiv <2 x double> %1051, %1055
  %1057 = fadd <2 x double> %1056, splat (double 1.000000e+00)
  %1058 = fmul <2 x double> %1052, %1057
  %1059 = load ptr, ptr %1011, align 16, !tbaa !46
  %1060 = getelementptr inbounds <2 x double>, ptr %1059, i64 %1030
  %1061 = load <2 x double>, ptr %1060, align 16, !tbaa !25
  %1062 = fadd <2 x double> %1061, splat (double -1.000000e+00)
  %1063 = fadd <2 x double> %1062, %1058
  %1064 = fcmp ogt <2 x double> %1063, zeroinitializer
  %1065 = select <2 x i1> %1064, <2 x double> %1063, <2 x double> zeroinitializer
  %1066 = fmul <2 x double> %999, %1065
  %1067 = load ptr, ptr %1012, align 8, !tbaa !59
  %1068 = getelementptr inbounds <2 x double>, ptr %1067, i64 %1030
  %1069 = fsub <2 x double> %1061, %1066
  %1070 = load <2 x double>, ptr %1068, align 16, !tbaa !25
  %1071 = select <2 x i1> %627, <2 x double> %1070, <2 x double> %1069
  store <2 x double> %1071, ptr %1068, align 16, !tbaa !25
  %1072 = load ptr, ptr %1013, align 8, !tbaa !47
  %1073 = getelementptr inbounds <2 x double>, ptr %1072, i64 %1030
  %1074 = load <2 x double>, ptr %1073, align 16, !tbaa !25
  %1075 = load i64, ptr %1002, align 16, !tbaa !30
  %1076 = icmp slt i64 %1030, %1075
  %1077 = load <2 x double>, ptr %1014, align 16
  %1078 = fsub <2 x double> %1001, %1077
  %1079 = select i1 %1076, <2 x double> %1077, <2 x double> %1078
  %1080 = fmul <2 x double> %1074, %1079
  %1081 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1066, <2 x double> %1080, <2 x double> %1029)
  %1082 = add nsw i64 %1030, 1
  %1083 = load i64, ptr %131, align 8, !tbaa !20
  %1084 = icmp slt i64 %1082, %1083
  br i1 %1084, label %1028, label %1015, !llvm.loop !60

1085:                                             ; preds = %962, %1015
  %1086 = add nuw nsw i64 %713, 1
  %1087 = load i64, ptr %140, align 16, !tbaa !16
  %1088 = icmp slt i64 %1086, %1087
  br i1 %1088, label %712, label %1122, !llvm.loop !61

1089:                                             ; preds = %881, %1089
  %1090 = phi i64 [ 0, %881 ], [ %1092, %1089 ]
  %1091 = load ptr, ptr %882, align 8, !tbaa !48
  %1092 = add nuw nsw i64 %1090, 1
  %1093 = getelementptr inbounds nuw <2 x double>, ptr %1091, i64 %1092
  %1094 = load <2 x double>, ptr %1093, align 16, !tbaa !25
  %1095 = getelementptr inbounds nuw <2 x double>, ptr %1091, i64 %1090
  %1096 = load <2 x double>, ptr %1095, align 16, !tbaa !25
  %1097 = fsub <2 x double> %1094, %1096
  %1098 = load ptr, ptr %883, align 8, !tbaa !49
  %1099 = getelementptr inbounds nuw <2 x double>, ptr %1098, i64 %1090
  %1100 = load <2 x double>, ptr %1099, align 16, !tbaa !25
  %1101 = fmul <2 x double> %1097, %1100
  %1102 = load ptr, ptr %884, align 16, !tbaa !62
  %1103 = getelementptr inbounds nuw <2 x double>, ptr %1102, i64 %1092
  %1104 = load <2 x double>, ptr %1103, align 16, !tbaa !25
  %1105 = getelementptr inbounds nuw <2 x double>, ptr %1102, i64 %1090
  %1106 = load <2 x double>, ptr %1105, align 16, !tbaa !25
  %1107 = fsub <2 x double> %1104, %1106
  %1108 = load ptr, ptr %885, align 16, !tbaa !63
  %1109 = getelementptr inbounds nuw <2 x double>, ptr %1108, i64 %1090
  %1110 = load <2 x double>, ptr %1109, align 16, !tbaa !25
  %1111 = fmul <2 x double> %1107, %1110
  %1112 = load <2 x double>, ptr %886, align 16, !tbaa !25
  %1113 = load <2 x double>, ptr %739, align 16, !tbaa !25
  %1114 = load <2 x double>, ptr %742, align 16, !tbaa !25
  %1115 = fmul <2 x double> %1111, %1114
  %1116 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1113, <2 x double> %1101, <2 x double> %1115)
  %1117 = fmul <2 x double> %1112, %1116
  %1118 = load ptr, ptr %887, align 8, !tbaa !64
  %1119 = getelementptr inbounds nuw <2 x double>, ptr %1118, i64 %1090
  store <2 x double> %1117, ptr %1119, align 16, !tbaa !25
  %1120 = load i64, ptr %132, align 16, !tbaa !21
  %1121 = icmp slt i64 %1092, %1120
  br i1 %1121, label %1089, label %956, !llvm.loop !65

1122:                                             ; preds = %1085, %624
  %1123 = phi i64 [ %710, %624 ], [ %1087, %1085 ]
  %1124 = load <2 x double>, ptr %172, align 16, !tbaa !25
  %1125 = fcmp ogt <2 x double> %1124, zeroinitializer
  %1126 = select <2 x i1> %1125, <2 x i64> %537, <2 x i64> zeroinitializer
  %1127 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1126)
  %1128 = icmp eq i64 %1127, 0
  br i1 %1128, label %1135, label %1129

1129:                                             ; preds = %1122
  %1130 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, <2 x i64> noundef %1126) #7
  %1131 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %1132 = icmp eq <2 x i64> %1126, zeroinitializer
  %1133 = select <2 x i1> %1132, <2 x double> %1131, <2 x double> %1130
  store <2 x double> %1133, ptr %162, align 16, !tbaa !25
  %1134 = load i64, ptr %140, align 16, !tbaa !16
  br label %1135

1135:                                             ; preds = %1122, %1129, %535
  %1136 = phi i64 [ %1123, %1122 ], [ %1134, %1129 ], [ %540, %535 ]
  %1137 = load <2 x double>, ptr %173, align 16, !tbaa !25
  %1138 = icmp eq <2 x i64> %537, zeroinitializer
  %1139 = select <2 x i1> %1138, <2 x double> %1137, <2 x double> zeroinitializer
  store <2 x double> %1139, ptr %173, align 16, !tbaa !25
  %1140 = icmp sgt i64 %1136, 0
  br i1 %1140, label %1146, label %1141

1141:                                             ; preds = %1135
  %1142 = load <2 x double>, ptr %177, align 16, !tbaa !25
  br label %1766

1143:                                             ; preds = %1760
  %1144 = load <2 x double>, ptr %177, align 16, !tbaa !25
  %1145 = icmp sgt i64 %1764, 0
  br i1 %1145, label %1771, label %1766

1146:                                             ; preds = %1135, %1760
  %1147 = phi i64 [ %1763, %1760 ], [ 0, %1135 ]
  %1148 = load ptr, ptr %141, align 8, !tbaa !27
  %1149 = getelementptr inbounds nuw %struct.Piece, ptr %1148, i64 %1147
  %1150 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %1151 = getelementptr inbounds nuw i8, ptr %1149, i64 1600
  %1152 = load <2 x double>, ptr %1151, align 16, !tbaa !25
  %1153 = fsub <2 x double> %1150, %1152
  %1154 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1153)
  %1155 = getelementptr inbounds nuw i8, ptr %1149, i64 544
  %1156 = load <2 x double>, ptr %1155, align 16, !tbaa !25
  %1157 = fcmp ogt <2 x double> %1156, splat (double 1.000000e-09)
  %1158 = select <2 x i1> %1157, <2 x double> %1156, <2 x double> splat (double 1.000000e-09)
  %1159 = fdiv <2 x double> %1154, %1158
  %1160 = getelementptr inbounds nuw i8, ptr %1149, i64 256
  %1161 = load <2 x double>, ptr %1160, align 16, !tbaa !25
  %1162 = fcmp ule <2 x double> %1156, zeroinitializer
  %1163 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1159)
  %1164 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1163)
  %1165 = select <2 x i1> %1162, <2 x double> splat (double 1.000000e+00), <2 x double> %1164
  %1166 = fmul <2 x double> %1161, %1165
  %1167 = getelementptr inbounds nuw i8, ptr %1149, i64 272
  %1168 = load <2 x double>, ptr %1167, align 16, !tbaa !25
  %1169 = getelementptr inbounds nuw i8, ptr %1149, i64 1408
  %1170 = load <2 x double>, ptr %1169, align 16, !tbaa !25
  %1171 = getelementptr inbounds nuw i8, ptr %1149, i64 1424
  %1172 = load <2 x double>, ptr %1171, align 16, !tbaa !25
  %1173 = fadd <2 x double> %1170, %1172
  %1174 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1168, <2 x double> %1173, <2 x double> %1166)
  %1175 = getelementptr inbounds nuw i8, ptr %1149, i64 288
  %1176 = load <2 x double>, ptr %1175, align 16, !tbaa !25
  %1177 = fcmp olt <2 x double> %1174, %1176
  %1178 = select <2 x i1> %1177, <2 x double> %1174, <2 x double> %1176
  %1179 = getelementptr inbounds nuw i8, ptr %1149, i64 1328
  %1180 = load <2 x double>, ptr %1179, align 16, !tbaa !25
  %1181 = getelementptr inbounds nuw i8, ptr %1149, i64 992
  %1182 = load <2 x double>, ptr %1181, align 16, !tbaa !25
  %1183 = getelementptr inbounds nuw i8, ptr %1149, i64 1344
  %1184 = load <2 x double>, ptr %1183, align 16, !tbaa !25
  %1185 = getelementptr inbounds nuw i8, ptr %1149, i64 1184
  %1186 = load <2 x double>, ptr %1185, align 16, !tbaa !25
  %1187 = fmul <2 x double> %1184, %1186
  %1188 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1180, <2 x double> %1182, <2 x double> %1187)
  %1189 = getelementptr inbounds nuw i8, ptr %1149, i64 304
  %1190 = load <2 x double>, ptr %1189, align 16, !tbaa !25
  %1191 = fneg <2 x double> %1190
  %1192 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1191, <2 x double> %1188, <2 x double> %1178)
  %1193 = getelementptr inbounds nuw i8, ptr %1149, i64 1312
  %1194 = load <2 x double>, ptr %1193, align 16, !tbaa !25
  %1195 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1190, <2 x double> %1194, <2 x double> splat (double 1.000000e+00))
  %1196 = fdiv <2 x double> %1192, %1195
  %1197 = getelementptr inbounds nuw i8, ptr %1149, i64 1872
  %1198 = load <2 x i64>, ptr %1197, align 16, !tbaa !25
  %1199 = load <2 x double>, ptr %174, align 16, !tbaa !25
  %1200 = icmp eq <2 x i64> %1198, zeroinitializer
  %1201 = select <2 x i1> %1200, <2 x double> %1150, <2 x double> %1199
  %1202 = getelementptr inbounds nuw i8, ptr %1149, i64 1376
  store <2 x double> %1201, ptr %1202, align 16, !tbaa !25
  %1203 = load <2 x double>, ptr %175, align 16, !tbaa !25
  %1204 = select <2 x i1> %1200, <2 x double> %1196, <2 x double> %1203
  %1205 = getelementptr inbounds nuw i8, ptr %1149, i64 800
  store <2 x double> %1204, ptr %1205, align 16, !tbaa !25
  %1206 = getelementptr inbounds nuw i8, ptr %1149, i64 224
  %1207 = load <2 x double>, ptr %1206, align 16, !tbaa !25
  %1208 = fcmp ule <2 x double> %1207, zeroinitializer
  %1209 = getelementptr inbounds nuw i8, ptr %1149, i64 736
  %1210 = getelementptr inbounds nuw i8, ptr %1149, i64 768
  %1211 = load <2 x double>, ptr %1210, align 16, !tbaa !25
  %1212 = fcmp ogt <2 x double> %1207, splat (double 1.000000e-30)
  %1213 = select <2 x i1> %1212, <2 x double> %1207, <2 x double> splat (double 1.000000e-30)
  %1214 = fdiv <2 x double> %1211, %1213
  %1215 = fcmp ogt <2 x double> %1214, zeroinitializer
  %1216 = select <2 x i1> %1215, <2 x double> %1214, <2 x double> zeroinitializer
  %1217 = fcmp olt <2 x double> %1216, splat (double 1.000000e+00)
  %1218 = select <2 x i1> %1217, <2 x double> %1216, <2 x double> splat (double 1.000000e+00)
  %1219 = select <2 x i1> %1208, <2 x double> zeroinitializer, <2 x double> %1218
  %1220 = getelementptr inbounds nuw i8, ptr %1149, i64 528
  %1221 = load <2 x double>, ptr %1220, align 16, !tbaa !25
  %1222 = fmul <2 x double> %1219, splat (double 4.180000e+03)
  %1223 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1222, <2 x double> %1207, <2 x double> %1221)
  %1224 = getelementptr inbounds nuw i8, ptr %1149, i64 1072
  %1225 = load <2 x double>, ptr %1224, align 16, !tbaa !25
  %1226 = getelementptr inbounds nuw i8, ptr %1149, i64 1264
  %1227 = load <2 x double>, ptr %1226, align 16, !tbaa !25
  %1228 = fmul <2 x double> %1184, %1227
  %1229 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1180, <2 x double> %1225, <2 x double> %1228)
  %1230 = getelementptr inbounds nuw i8, ptr %1149, i64 1840
  %1231 = load <2 x i64>, ptr %1230, align 16, !tbaa !25
  %1232 = fcmp ule <2 x double> %1221, zeroinitializer
  %1233 = getelementptr inbounds nuw i8, ptr %1149, i64 1728
  store <2 x double> %1219, ptr %1233, align 16, !tbaa !25
  %1234 = fmul <2 x double> %1194, %1223
  %1235 = icmp eq <2 x i64> %1231, splat (i64 -1)
  %1236 = select <2 x i1> %1232, <2 x i1> splat (i1 true), <2 x i1> %1235
  %1237 = select <2 x i1> %1236, <2 x double> zeroinitializer, <2 x double> %1234
  %1238 = getelementptr inbounds nuw i8, ptr %1149, i64 1744
  store <2 x double> %1237, ptr %1238, align 16, !tbaa !25
  %1239 = fmul <2 x double> %1229, %1223
  %1240 = select <2 x i1> %1236, <2 x double> zeroinitializer, <2 x double> %1239
  %1241 = getelementptr inbounds nuw i8, ptr %1149, i64 1760
  store <2 x double> %1240, ptr %1241, align 16, !tbaa !25
  %1242 = load <2 x double>, ptr %1149, align 16, !tbaa !25
  %1243 = load <2 x double>, ptr %1209, align 16, !tbaa !25
  %1244 = fsub <2 x double> %1242, %1243
  %1245 = fsub <2 x double> splat (double 1.000000e+00), %1219
  %1246 = getelementptr inbounds nuw i8, ptr %1149, i64 480
  %1247 = load <2 x double>, ptr %1246, align 16, !tbaa !25
  %1248 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1245, <2 x double> %1247, <2 x double> %1244)
  %1249 = load <2 x double>, ptr %176, align 16, !tbaa !25
  %1250 = fdiv <2 x double> splat (double 1.000000e+00), %1249
  %1251 = getelementptr inbounds nuw i8, ptr %1149, i64 560
  %1252 = load <2 x double>, ptr %1251, align 16, !tbaa !25
  %1253 = fcmp ogt <2 x double> %1252, splat (double 1.000000e-30)
  %1254 = select <2 x i1> %1253, <2 x double> %1252, <2 x double> splat (double 1.000000e-30)
  %1255 = fdiv <2 x double> %1248, %1254
  %1256 = fadd <2 x double> %1250, %1255
  %1257 = getelementptr inbounds nuw i8, ptr %1149, i64 1776
  store <2 x double> %1256, ptr %1257, align 16, !tbaa !25
  %1258 = getelementptr inbounds nuw i8, ptr %1149, i64 1696
  store <2 x double> %1170, ptr %1258, align 16, !tbaa !25
  %1259 = getelementptr inbounds nuw i8, ptr %1149, i64 640
  %1260 = load <2 x double>, ptr %1259, align 16, !tbaa !25
  %1261 = getelementptr inbounds nuw i8, ptr %1149, i64 656
  %1262 = load <2 x double>, ptr %1261, align 16, !tbaa !25
  %1263 = getelementptr inbounds nuw i8, ptr %1149, i64 672
  %1264 = load <2 x double>, ptr %1263, align 16, !tbaa !25
  %1265 = getelementptr inbounds nuw i8, ptr %1149, i64 688
  %1266 = load <2 x double>, ptr %1265, align 16, !tbaa !25
  %1267 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1266, <2 x double> %1264)
  %1268 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1267, <2 x double> %1262)
  %1269 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1268, <2 x double> %1260)
  %1270 = getelementptr inbounds nuw i8, ptr %1149, i64 912
  store <2 x double> %1269, ptr %1270, align 16, !tbaa !25
  %1271 = getelementptr inbounds nuw i8, ptr %1149, i64 1104
  %1272 = load <2 x double>, ptr %1271, align 16, !tbaa !25
  %1273 = fmul <2 x double> %1180, %1272
  %1274 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1194, <2 x double> %1269, <2 x double> %1273)
  %1275 = getelementptr inbounds nuw i8, ptr %1149, i64 1296
  %1276 = load <2 x double>, ptr %1275, align 16, !tbaa !25
  %1277 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1184, <2 x double> %1276, <2 x double> %1274)
  %1278 = fmul <2 x double> %1277, splat (double 5.000000e-01)
  %1279 = getelementptr inbounds nuw i8, ptr %1149, i64 1680
  store <2 x double> %1278, ptr %1279, align 16, !tbaa !25
  %1280 = getelementptr inbounds nuw i8, ptr %1149, i64 576
  %1281 = load <2 x double>, ptr %1280, align 16, !tbaa !25
  %1282 = getelementptr inbounds nuw i8, ptr %1149, i64 592
  %1283 = load <2 x double>, ptr %1282, align 16, !tbaa !25
  %1284 = getelementptr inbounds nuw i8, ptr %1149, i64 608
  %1285 = load <2 x double>, ptr %1284, align 16, !tbaa !25
  %1286 = getelementptr inbounds nuw i8, ptr %1149, i64 624
  %1287 = load <2 x double>, ptr %1286, align 16, !tbaa !25
  %1288 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1287, <2 x double> %1285)
  %1289 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1288, <2 x double> %1283)
  %1290 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1289, <2 x double> %1281)
  %1291 = getelementptr inbounds nuw i8, ptr %1149, i64 1664
  store <2 x double> %1290, ptr %1291, align 16, !tbaa !25
  %1292 = getelementptr inbounds nuw i8, ptr %1149, i64 1888
  %1293 = load i64, ptr %1292, align 16, !tbaa !30
  %1294 = icmp eq i64 %1293, 0
  %1295 = getelementptr inbounds nuw i8, ptr %1149, i64 16
  %1296 = load <2 x double>, ptr %1295, align 16
  %1297 = fsub <2 x double> %1243, %1296
  %1298 = fdiv <2 x double> splat (double 1.000000e+00), %1297
  %1299 = fdiv <2 x double> %1290, %1243
  %1300 = select i1 %1294, <2 x double> %1299, <2 x double> %1298
  %1301 = load i64, ptr %131, align 8, !tbaa !20
  %1302 = getelementptr inbounds nuw i8, ptr %1149, i64 2008
  %1303 = load ptr, ptr %1302, align 8, !tbaa !34
  br i1 %1294, label %1304, label %1308

1304:                                             ; preds = %1146
  %1305 = getelementptr inbounds <2 x double>, ptr %1303, i64 %1301
  %1306 = load <2 x double>, ptr %1305, align 16, !tbaa !25
  %1307 = fmul <2 x double> %1300, %1306
  br label %1324

1308:                                             ; preds = %1146
  %1309 = shl nsw i64 %1301, 6
  %1310 = getelementptr inbounds i8, ptr %1303, i64 %1309
  %1311 = load <2 x double>, ptr %1310, align 16, !tbaa !25
  %1312 = getelementptr inbounds nuw i8, ptr %1310, i64 16
  %1313 = load <2 x double>, ptr %1312, align 16, !tbaa !25
  %1314 = getelementptr inbounds nuw i8, ptr %1310, i64 32
  %1315 = load <2 x double>, ptr %1314, align 16, !tbaa !25
  %1316 = getelementptr inbounds nuw i8, ptr %1310, i64 48
  %1317 = load <2 x double>, ptr %1316, align 16, !tbaa !25
  %1318 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1317, <2 x double> %1315)
  %1319 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1318, <2 x double> %1313)
  %1320 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1319, <2 x double> %1311)
  %1321 = icmp sgt i64 %1301, %1293
  %1322 = fmul <2 x double> %1300, %1320
  %1323 = select i1 %1321, <2 x double> %1322, <2 x double> %1320
  br label %1324

1324:                                             ; preds = %1304, %1308
  %1325 = phi <2 x double> [ %1307, %1304 ], [ %1323, %1308 ]
  %1326 = getelementptr inbounds nuw i8, ptr %1149, i64 1392
  %1327 = load <2 x double>, ptr %1326, align 16, !tbaa !25
  %1328 = fcmp ogt <2 x double> %1244, splat (double 0x3D719799812DEA11)
  %1329 = select <2 x i1> %1328, <2 x double> %1244, <2 x double> splat (double 0x3D719799812DEA11)
  %1330 = getelementptr inbounds nuw i8, ptr %1149, i64 1632
  store <2 x double> %1298, ptr %1330, align 16, !tbaa !25
  %1331 = getelementptr inbounds nuw i8, ptr %1149, i64 176
  %1332 = load <2 x double>, ptr %1331, align 16, !tbaa !25
  %1333 = fdiv <2 x double> %1332, %1329
  %1334 = getelementptr inbounds nuw i8, ptr %1149, i64 1648
  store <2 x double> %1333, ptr %1334, align 16, !tbaa !25
  %1335 = getelementptr inbounds nuw i8, ptr %1149, i64 1896
  %1336 = load ptr, ptr %1335, align 8, !tbaa !56
  %1337 = load i64, ptr %131, align 8, !tbaa !20
  %1338 = getelementptr <2 x double>, ptr %1336, i64 %1337
  %1339 = getelementptr i8, ptr %1338, i64 -16
  %1340 = load <2 x double>, ptr %1339, align 16, !tbaa !25
  %1341 = fadd <2 x double> %1327, %1340
  %1342 = fmul <2 x double> %1341, splat (double 5.000000e-01)
  %1343 = getelementptr inbounds nuw i8, ptr %1149, i64 48
  %1344 = load <2 x double>, ptr %1343, align 16, !tbaa !25
  %1345 = getelementptr inbounds nuw i8, ptr %1149, i64 64
  %1346 = load <2 x double>, ptr %1345, align 16, !tbaa !25
  %1347 = getelementptr inbounds nuw i8, ptr %1149, i64 80
  %1348 = load <2 x double>, ptr %1347, align 16, !tbaa !25
  %1349 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1342, <2 x double> %1348, <2 x double> %1346)
  %1350 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1342, <2 x double> %1349, <2 x double> %1344)
  %1351 = fmul <2 x double> %1325, %1350
  %1352 = fmul <2 x double> %1219, %1351
  %1353 = getelementptr inbounds nuw i8, ptr %1149, i64 512
  %1354 = load <2 x double>, ptr %1353, align 16, !tbaa !25
  %1355 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1352, <2 x double> %1354, <2 x double> splat (double 1.000000e+00))
  %1356 = fdiv <2 x double> splat (double 1.000000e+00), %1355
  %1357 = icmp eq <2 x i64> %1231, zeroinitializer
  %1358 = select <2 x i1> %1357, <2 x double> %1356, <2 x double> splat (double 1.000000e+00)
  %1359 = getelementptr inbounds nuw i8, ptr %1149, i64 1712
  store <2 x double> %1358, ptr %1359, align 16, !tbaa !25
  %1360 = fmul <2 x double> %1351, %1358
  %1361 = getelementptr inbounds nuw i8, ptr %1149, i64 1504
  store <2 x double> %1360, ptr %1361, align 16, !tbaa !25
  %1362 = fmul <2 x double> %1278, splat (double 2.000000e+00)
  %1363 = getelementptr inbounds nuw i8, ptr %1149, i64 96
  %1364 = load <2 x double>, ptr %1363, align 16, !tbaa !25
  %1365 = getelementptr inbounds nuw i8, ptr %1149, i64 112
  %1366 = load <2 x double>, ptr %1365, align 16, !tbaa !25
  %1367 = getelementptr inbounds nuw i8, ptr %1149, i64 128
  %1368 = load <2 x double>, ptr %1367, align 16, !tbaa !25
  %1369 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1327, <2 x double> %1368, <2 x double> %1366)
  %1370 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1327, <2 x double> %1369, <2 x double> %1364)
  %1371 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1362, <2 x double> %1370, <2 x double> %1360)
  %1372 = getelementptr inbounds nuw i8, ptr %1149, i64 1536
  store <2 x double> %1371, ptr %1372, align 16, !tbaa !25
  %1373 = fmul <2 x double> %1204, %1245
  %1374 = getelementptr inbounds nuw i8, ptr %1149, i64 496
  %1375 = load <2 x double>, ptr %1374, align 16, !tbaa !25
  %1376 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1373, <2 x double> %1375, <2 x double> splat (double 1.000000e+00))
  %1377 = fdiv <2 x double> %1204, %1376
  %1378 = load i64, ptr %132, align 16, !tbaa !21
  %1379 = sitofp i64 %1378 to double
  %1380 = fmul double %1379, 2.000000e+00
  %1381 = insertelement <2 x double> poison, double %1380, i64 0
  %1382 = shufflevector <2 x double> %1381, <2 x double> poison, <2 x i32> zeroinitializer
  %1383 = fmul <2 x double> %1333, %1382
  %1384 = fadd <2 x double> %1377, %1383
  %1385 = fdiv <2 x double> %1377, %1384
  %1386 = fmul <2 x double> %1290, %1383
  %1387 = select <2 x i1> %1357, <2 x double> %1377, <2 x double> %1386
  %1388 = getelementptr inbounds nuw i8, ptr %1149, i64 1520
  store <2 x double> %1387, ptr %1388, align 16, !tbaa !25
  %1389 = fmul <2 x double> %1383, %1385
  %1390 = select <2 x i1> %1357, <2 x double> %1377, <2 x double> %1389
  %1391 = getelementptr inbounds nuw i8, ptr %1149, i64 1552
  store <2 x double> %1390, ptr %1391, align 16, !tbaa !25
  %1392 = select <2 x i1> %1357, <2 x double> splat (double 1.000000e+00), <2 x double> %1385
  %1393 = getelementptr inbounds nuw i8, ptr %1149, i64 1568
  store <2 x double> %1392, ptr %1393, align 16, !tbaa !25
  %1394 = load i64, ptr %131, align 8, !tbaa !20
  %1395 = getelementptr inbounds nuw i8, ptr %1149, i64 384
  %1396 = load <2 x double>, ptr %1395, align 16, !tbaa !25
  %1397 = fsub <2 x double> %1269, %1396
  %1398 = fmul <2 x double> %1366, splat (double 5.000000e-01)
  %1399 = fmul <2 x double> %1368, splat (double 0x3FE5555555555555)
  %1400 = load <2 x double>, ptr %1336, align 16, !tbaa !25
  br i1 %1294, label %1404, label %1401

1401:                                             ; preds = %1324
  %1402 = getelementptr inbounds nuw i8, ptr %1149, i64 160
  %1403 = load <2 x double>, ptr %1402, align 16, !tbaa !25
  br label %1411

1404:                                             ; preds = %1324
  %1405 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1400, <2 x double> %1368, <2 x double> %1366)
  %1406 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1400, <2 x double> %1405, <2 x double> %1364)
  %1407 = fneg <2 x double> %1400
  %1408 = fmul <2 x double> %1400, %1407
  %1409 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1400, <2 x double> %1399, <2 x double> %1398)
  %1410 = fmul <2 x double> %1408, %1409
  br label %1411

1411:                                             ; preds = %1404, %1401
  %1412 = phi <2 x double> [ %1403, %1401 ], [ %1406, %1404 ]
  %1413 = phi <2 x double> [ zeroinitializer, %1401 ], [ %1410, %1404 ]
  %1414 = icmp sgt i64 %1394, 0
  br i1 %1414, label %1415, label %1591

1415:                                             ; preds = %1411
  %1416 = getelementptr inbounds nuw i8, ptr %1149, i64 160
  %1417 = getelementptr inbounds nuw i8, ptr %1149, i64 2008
  %1418 = getelementptr inbounds nuw i8, ptr %1149, i64 720
  %1419 = getelementptr inbounds nuw i8, ptr %1149, i64 704
  %1420 = getelementptr inbounds nuw i8, ptr %1149, i64 144
  %1421 = getelementptr inbounds nuw i8, ptr %1149, i64 1984
  %1422 = getelementptr inbounds nuw i8, ptr %1149, i64 1992
  %1423 = getelementptr inbounds nuw i8, ptr %1149, i64 1920
  %1424 = getelementptr inbounds nuw i8, ptr %1149, i64 1960
  %1425 = getelementptr inbounds nuw i8, ptr %1149, i64 1968
  %1426 = getelementptr inbounds nuw i8, ptr %1149, i64 1976
  %1427 = getelementptr inbounds nuw i8, ptr %1149, i64 1944
  %1428 = getelementptr inbounds nuw i8, ptr %1149, i64 1952
  br label %1429

1429:                                             ; preds = %1415, %1542
  %1430 = phi <2 x double> [ %1400, %1415 ], [ %1546, %1542 ]
  %1431 = phi <2 x double> [ zeroinitializer, %1415 ], [ %1543, %1542 ]
  %1432 = phi <2 x double> [ zeroinitializer, %1415 ], [ %1544, %1542 ]
  %1433 = phi <2 x double> [ zeroinitializer, %1415 ], [ %1545, %1542 ]
  %1434 = phi <2 x double> [ zeroinitializer, %1415 ], [ %1577, %1542 ]
  %1435 = phi <2 x double> [ zeroinitializer, %1415 ], [ %1580, %1542 ]
  %1436 = phi <2 x double> [ %1412, %1415 ], [ %1547, %1542 ]
  %1437 = phi <2 x double> [ %1413, %1415 ], [ %1548, %1542 ]
  %1438 = phi i64 [ 0, %1415 ], [ %1439, %1542 ]
  %1439 = add nuw nsw i64 %1438, 1
  %1440 = icmp slt i64 %1439, %1394
  br i1 %1440, label %1441, label %1532

1441:                                             ; preds = %1429
  %1442 = load ptr, ptr %1335, align 8, !tbaa !56
  %1443 = getelementptr inbounds nuw <2 x double>, ptr %1442, i64 %1439
  %1444 = load <2 x double>, ptr %1443, align 16, !tbaa !25
  %1445 = icmp slt i64 %1439, %1293
  br i1 %1445, label %1446, label %1448

1446:                                             ; preds = %1441
  %1447 = load <2 x double>, ptr %1416, align 16, !tbaa !25
  br label %1458

1448:                                             ; preds = %1441
  %1449 = load <2 x double>, ptr %1363, align 16, !tbaa !25
  %1450 = load <2 x double>, ptr %1365, align 16, !tbaa !25
  %1451 = load <2 x double>, ptr %1367, align 16, !tbaa !25
  %1452 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1444, <2 x double> %1451, <2 x double> %1450)
  %1453 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1444, <2 x double> %1452, <2 x double> %1449)
  %1454 = fneg <2 x double> %1444
  %1455 = fmul <2 x double> %1444, %1454
  %1456 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1444, <2 x double> %1399, <2 x double> %1398)
  %1457 = fmul <2 x double> %1455, %1456
  br label %1458

1458:                                             ; preds = %1448, %1446
  %1459 = phi <2 x double> [ %1447, %1446 ], [ %1453, %1448 ]
  %1460 = phi <2 x double> [ zeroinitializer, %1446 ], [ %1457, %1448 ]
  %1461 = load i64, ptr %1292, align 16, !tbaa !30
  %1462 = icmp eq i64 %1461, 0
  %1463 = load ptr, ptr %1417, align 8, !tbaa !34
  br i1 %1462, label %1464, label %1468

1464:                                             ; preds = %1458
  %1465 = getelementptr inbounds nuw <2 x double>, ptr %1463, i64 %1439
  %1466 = load <2 x double>, ptr %1465, align 16, !tbaa !25
  %1467 = fmul <2 x double> %1300, %1466
  br label %1484

1468:                                             ; preds = %1458
  %1469 = shl nsw i64 %1439, 6
  %1470 = getelementptr inbounds nuw i8, ptr %1463, i64 %1469
  %1471 = load <2 x double>, ptr %1470, align 16, !tbaa !25
  %1472 = getelementptr inbounds nuw i8, ptr %1470, i64 16
  %1473 = load <2 x double>, ptr %1472, align 16, !tbaa !25
  %1474 = getelementptr inbounds nuw i8, ptr %1470, i64 32
  %1475 = load <2 x double>, ptr %1474, align 16, !tbaa !25
  %1476 = getelementptr inbounds nuw i8, ptr %1470, i64 48
  %1477 = load <2 x double>, ptr %1476, align 16, !tbaa !25
  %1478 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1477, <2 x double> %1475)
  %1479 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1478, <2 x double> %1473)
  %1480 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1243, <2 x double> %1479, <2 x double> %1471)
  %1481 = icmp slt i64 %1438, %1461
  %1482 = fmul <2 x double> %1300, %1480
  %1483 = select i1 %1481, <2 x double> %1480, <2 x double> %1482
  br label %1484

1484:                                             ; preds = %1468, %1464
  %1485 = phi <2 x double> [ %1467, %1464 ], [ %1483, %1468 ]
  %1486 = icmp slt i64 %1438, %1461
  br i1 %1486, label %1496, label %1487

1487:                                             ; preds = %1484
  %1488 = fadd <2 x double> %1430, %1444
  %1489 = fmul <2 x double> %1488, splat (double 5.000000e-01)
  %1490 = load <2 x double>, ptr %1343, align 16, !tbaa !25
  %1491 = load <2 x double>, ptr %1345, align 16, !tbaa !25
  %1492 = load <2 x double>, ptr %1347, align 16, !tbaa !25
  %1493 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1489, <2 x double> %1492, <2 x double> %1491)
  %1494 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1489, <2 x double> %1493, <2 x double> %1490)
  %1495 = fmul <2 x double> %1485, %1494
  br label %1517

1496:                                             ; preds = %1484
  %1497 = icmp slt i64 %1439, %1461
  br i1 %1497, label %1498, label %1501

1498:                                             ; preds = %1496
  %1499 = load <2 x double>, ptr %1420, align 16, !tbaa !25
  %1500 = fmul <2 x double> %1485, %1499
  br label %1517

1501:                                             ; preds = %1496
  %1502 = load <2 x double>, ptr %1418, align 16, !tbaa !25
  %1503 = load <2 x double>, ptr %1295, align 16, !tbaa !25
  %1504 = fsub <2 x double> %1243, %1503
  %1505 = fmul <2 x double> %1502, %1504
  %1506 = load <2 x double>, ptr %1419, align 16, !tbaa !25
  %1507 = load <2 x double>, ptr %1420, align 16, !tbaa !25
  %1508 = fdiv <2 x double> %1506, %1507
  %1509 = load <2 x double>, ptr %1343, align 16, !tbaa !25
  %1510 = load <2 x double>, ptr %1345, align 16, !tbaa !25
  %1511 = load <2 x double>, ptr %1347, align 16, !tbaa !25
  %1512 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1444, <2 x double> %1511, <2 x double> %1510)
  %1513 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1444, <2 x double> %1512, <2 x double> %1509)
  %1514 = fdiv <2 x double> %1505, %1513
  %1515 = fadd <2 x double> %1508, %1514
  %1516 = fdiv <2 x double> %1485, %1515
  br label %1517

1517:                                             ; preds = %1487, %1498, %1501
  %1518 = phi <2 x double> [ %1495, %1487 ], [ %1500, %1498 ], [ %1516, %1501 ]
  br i1 %1445, label %1525, label %1519

1519:                                             ; preds = %1517
  %1520 = load ptr, ptr %1421, align 16, !tbaa !66
  %1521 = getelementptr inbounds nuw <2 x double>, ptr %1520, i64 %1439
  %1522 = load <2 x double>, ptr %1521, align 16, !tbaa !25
  %1523 = load <2 x double>, ptr %1279, align 16, !tbaa !25
  %1524 = fmul <2 x double> %1522, %1523
  br label %1525

1525:                                             ; preds = %1517, %1519
  %1526 = phi <2 x double> [ %1524, %1519 ], [ zeroinitializer, %1517 ]
  %1527 = fneg <2 x double> %1526
  %1528 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1527, <2 x double> %1436, <2 x double> %1518)
  %1529 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1526, <2 x double> %1459, <2 x double> %1518)
  %1530 = fadd <2 x double> %1437, %1460
  %1531 = fmul <2 x double> %1530, %1526
  br label %1542

1532:                                             ; preds = %1429
  %1533 = load <2 x double>, ptr %1326, align 16, !tbaa !25
  %1534 = load <2 x double>, ptr %1361, align 16, !tbaa !25
  %1535 = load <2 x double>, ptr %1372, align 16, !tbaa !25
  %1536 = load <2 x double>, ptr %1279, align 16, !tbaa !25
  %1537 = fmul <2 x double> %1536, splat (double -2.000000e+00)
  %1538 = fmul <2 x double> %1533, %1537
  %1539 = fmul <2 x double> %1533, %1538
  %1540 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1533, <2 x double> %1399, <2 x double> %1398)
  %1541 = fmul <2 x double> %1540, %1539
  br label %1542

1542:                                             ; preds = %1532, %1525
  %1543 = phi <2 x double> [ %1528, %1525 ], [ %1534, %1532 ]
  %1544 = phi <2 x double> [ %1529, %1525 ], [ %1535, %1532 ]
  %1545 = phi <2 x double> [ %1531, %1525 ], [ %1541, %1532 ]
  %1546 = phi <2 x double> [ %1444, %1525 ], [ %1430, %1532 ]
  %1547 = phi <2 x double> [ %1459, %1525 ], [ %1436, %1532 ]
  %1548 = phi <2 x double> [ %1460, %1525 ], [ %1437, %1532 ]
  %1549 = load ptr, ptr %1422, align 8, !tbaa !47
  %1550 = getelementptr inbounds nuw <2 x double>, ptr %1549, i64 %1438
  %1551 = load <2 x double>, ptr %1550, align 16, !tbaa !25
  %1552 = icmp slt i64 %1438, %1293
  %1553 = select i1 %1552, <2 x double> %1396, <2 x double> %1397
  %1554 = fmul <2 x double> %1194, %1553
  %1555 = fmul <2 x double> %1554, %1551
  %1556 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1555, <2 x double> %1436, <2 x double> %1543)
  %1557 = fadd <2 x double> %1432, %1556
  %1558 = fsub <2 x double> %1545, %1433
  %1559 = fneg <2 x double> %1555
  %1560 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1559, <2 x double> %1437, <2 x double> %1558)
  %1561 = load ptr, ptr %1423, align 16, !tbaa !57
  %1562 = getelementptr inbounds nuw <2 x double>, ptr %1561, i64 %1438
  %1563 = load <2 x double>, ptr %1562, align 16, !tbaa !25
  %1564 = fsub <2 x double> %1560, %1563
  %1565 = fneg <2 x double> %1431
  %1566 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1565, <2 x double> %1435, <2 x double> %1557)
  %1567 = fdiv <2 x double> splat (double 1.000000e+00), %1566
  %1568 = load ptr, ptr %1424, align 8, !tbaa !67
  %1569 = getelementptr inbounds nuw <2 x double>, ptr %1568, i64 %1438
  store <2 x double> %1564, ptr %1569, align 16, !tbaa !25
  %1570 = load ptr, ptr %1425, align 16, !tbaa !68
  %1571 = getelementptr inbounds nuw <2 x double>, ptr %1570, i64 %1438
  store <2 x double> %1431, ptr %1571, align 16, !tbaa !25
  %1572 = fadd <2 x double> %1431, %1544
  %1573 = fsub <2 x double> %1572, %1557
  %1574 = load ptr, ptr %1426, align 8, !tbaa !69
  %1575 = getelementptr inbounds nuw <2 x double>, ptr %1574, i64 %1438
  store <2 x double> %1573, ptr %1575, align 16, !tbaa !25
  %1576 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1431, <2 x double> %1434, <2 x double> %1564)
  %1577 = fmul <2 x double> %1576, %1567
  %1578 = load ptr, ptr %1427, align 8, !tbaa !70
  %1579 = getelementptr inbounds nuw <2 x double>, ptr %1578, i64 %1438
  store <2 x double> %1577, ptr %1579, align 16, !tbaa !25
  %1580 = fmul <2 x double> %1544, %1567
  %1581 = load ptr, ptr %1428, align 16, !tbaa !71
  %1582 = getelementptr inbounds nuw <2 x double>, ptr %1581, i64 %1438
  store <2 x double> %1580, ptr %1582, align 16, !tbaa !25
  %1583 = icmp eq i64 %1439, %1394
  br i1 %1583, label %1584, label %1429, !llvm.loop !72

1584:                                             ; preds = %1542
  %1585 = load i64, ptr %131, align 8, !tbaa !20
  %1586 = load <2 x double>, ptr %1361, align 16, !tbaa !25
  %1587 = load <2 x double>, ptr %1388, align 16, !tbaa !25
  %1588 = load <2 x double>, ptr %1241, align 16, !tbaa !25
  %1589 = load <2 x double>, ptr %1238, align 16, !tbaa !25
  %1590 = load <2 x i64>, ptr %1230, align 16, !tbaa !25
  br label %1591

1591:                                             ; preds = %1584, %1411
  %1592 = phi <2 x i64> [ %1590, %1584 ], [ %1231, %1411 ]
  %1593 = phi <2 x double> [ %1589, %1584 ], [ %1237, %1411 ]
  %1594 = phi <2 x double> [ %1588, %1584 ], [ %1240, %1411 ]
  %1595 = phi <2 x double> [ %1587, %1584 ], [ %1387, %1411 ]
  %1596 = phi <2 x double> [ %1586, %1584 ], [ %1360, %1411 ]
  %1597 = phi i64 [ %1585, %1584 ], [ %1394, %1411 ]
  %1598 = getelementptr inbounds nuw i8, ptr %1149, i64 1944
  %1599 = load ptr, ptr %1598, align 8, !tbaa !70
  %1600 = add nsw i64 %1597, -1
  %1601 = getelementptr inbounds <2 x double>, ptr %1599, i64 %1600
  %1602 = load <2 x double>, ptr %1601, align 16, !tbaa !25
  %1603 = getelementptr inbounds nuw i8, ptr %1149, i64 1952
  %1604 = load ptr, ptr %1603, align 16, !tbaa !71
  %1605 = getelementptr inbounds <2 x double>, ptr %1604, i64 %1600
  %1606 = load <2 x double>, ptr %1605, align 16, !tbaa !25
  %1607 = fmul <2 x double> %1602, %1596
  %1608 = fsub <2 x double> splat (double 1.000000e+00), %1606
  %1609 = fmul <2 x double> %1596, %1608
  %1610 = load <2 x double>, ptr %1202, align 16, !tbaa !25
  %1611 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1595, <2 x double> %1610, <2 x double> %1607)
  %1612 = fsub <2 x double> %1611, %1594
  %1613 = fadd <2 x double> %1609, %1595
  %1614 = fadd <2 x double> %1613, %1593
  %1615 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1592)
  %1616 = icmp eq i64 %1615, 0
  %1617 = load i64, ptr %132, align 16, !tbaa !21
  br i1 %1616, label %1618, label %1633

1618:                                             ; preds = %1591
  %1619 = icmp slt i64 %1617, 0
  br i1 %1619, label %1624, label %1620

1620:                                             ; preds = %1618
  %1621 = getelementptr inbounds nuw i8, ptr %1149, i64 352
  %1622 = getelementptr inbounds nuw i8, ptr %1149, i64 2064
  %1623 = load <2 x double>, ptr %1621, align 16, !tbaa !25
  br label %1626

1624:                                             ; preds = %1626, %1618
  %1625 = getelementptr inbounds nuw i8, ptr %1149, i64 1456
  store <2 x double> %1612, ptr %1625, align 16, !tbaa !25
  br label %1760

1626:                                             ; preds = %1620, %1626
  %1627 = phi i64 [ 0, %1620 ], [ %1630, %1626 ]
  %1628 = load ptr, ptr %1622, align 16, !tbaa !73
  %1629 = getelementptr inbounds nuw <2 x double>, ptr %1628, i64 %1627
  store <2 x double> %1623, ptr %1629, align 16, !tbaa !25
  %1630 = add nuw nsw i64 %1627, 1
  %1631 = load i64, ptr %132, align 16, !tbaa !21
  %1632 = icmp slt i64 %1627, %1631
  br i1 %1632, label %1626, label %1624, !llvm.loop !74

1633:                                             ; preds = %1591
  %1634 = load <2 x double>, ptr %1209, align 16, !tbaa !25
  %1635 = load <2 x double>, ptr %1258, align 16, !tbaa !25
  %1636 = getelementptr inbounds nuw i8, ptr %1149, i64 320
  %1637 = load <2 x double>, ptr %1636, align 16, !tbaa !25
  %1638 = fmul <2 x double> %1635, %1637
  %1639 = load <2 x double>, ptr %1149, align 16, !tbaa !25
  %1640 = fsub <2 x double> %1639, %1634
  %1641 = sitofp i64 %1617 to double
  %1642 = insertelement <2 x double> poison, double %1641, i64 0
  %1643 = shufflevector <2 x double> %1642, <2 x double> poison, <2 x i32> zeroinitializer
  %1644 = fdiv <2 x double> %1640, %1643
  %1645 = load <2 x double>, ptr %1391, align 16, !tbaa !25
  %1646 = load <2 x double>, ptr %1393, align 16, !tbaa !25
  %1647 = getelementptr inbounds nuw i8, ptr %1149, i64 352
  %1648 = load <2 x double>, ptr %1647, align 16, !tbaa !25
  %1649 = getelementptr inbounds nuw i8, ptr %1149, i64 2064
  %1650 = load ptr, ptr %1649, align 16, !tbaa !73
  %1651 = getelementptr inbounds <2 x double>, ptr %1650, i64 %1617
  store <2 x double> %1648, ptr %1651, align 16, !tbaa !25
  %1652 = icmp sgt i64 %1617, 0
  br i1 %1652, label %1653, label %1744

1653:                                             ; preds = %1633
  %1654 = fneg <2 x double> %1638
  %1655 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1654, <2 x double> %1646, <2 x double> %1645)
  %1656 = fsub <2 x double> splat (double 1.000000e+00), %1646
  %1657 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1638, <2 x double> %1656, <2 x double> %1645)
  %1658 = getelementptr inbounds nuw i8, ptr %1149, i64 2072
  %1659 = getelementptr inbounds nuw i8, ptr %1149, i64 2080
  %1660 = getelementptr inbounds nuw i8, ptr %1149, i64 192
  %1661 = fmul <2 x double> %1638, splat (double -5.000000e-01)
  %1662 = getelementptr inbounds nuw i8, ptr %1149, i64 2040
  %1663 = getelementptr inbounds nuw i8, ptr %1149, i64 2048
  %1664 = getelementptr inbounds nuw i8, ptr %1149, i64 2056
  br label %1665

1665:                                             ; preds = %1653, %1719
  %1666 = phi <2 x double> [ %1657, %1653 ], [ %1721, %1719 ]
  %1667 = phi <2 x double> [ %1655, %1653 ], [ %1722, %1719 ]
  %1668 = phi <2 x double> [ %1610, %1653 ], [ %1737, %1719 ]
  %1669 = phi <2 x double> [ zeroinitializer, %1653 ], [ %1740, %1719 ]
  %1670 = phi <2 x double> [ %1648, %1653 ], [ %1683, %1719 ]
  %1671 = phi i64 [ %1617, %1653 ], [ %1672, %1719 ]
  %1672 = add nsw i64 %1671, -1
  %1673 = uitofp nneg i64 %1672 to double
  %1674 = insertelement <2 x double> poison, double %1673, i64 0
  %1675 = shufflevector <2 x double> %1674, <2 x double> poison, <2 x i32> zeroinitializer
  %1676 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1644, <2 x double> %1634)
  %1677 = load <2 x double>, ptr %1259, align 16, !tbaa !25
  %1678 = load <2 x double>, ptr %1261, align 16, !tbaa !25
  %1679 = load <2 x double>, ptr %1263, align 16, !tbaa !25
  %1680 = load <2 x double>, ptr %1265, align 16, !tbaa !25
  %1681 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1680, <2 x double> %1679)
  %1682 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1681, <2 x double> %1678)
  %1683 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1682, <2 x double> %1677)
  %1684 = load <2 x double>, ptr %1193, align 16, !tbaa !25
  %1685 = load <2 x double>, ptr %1179, align 16, !tbaa !25
  %1686 = load ptr, ptr %1658, align 8, !tbaa !48
  %1687 = getelementptr inbounds nuw <2 x double>, ptr %1686, i64 %1672
  %1688 = load <2 x double>, ptr %1687, align 16, !tbaa !25
  %1689 = fmul <2 x double> %1685, %1688
  %1690 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1684, <2 x double> %1683, <2 x double> %1689)
  %1691 = load <2 x double>, ptr %1183, align 16, !tbaa !25
  %1692 = load ptr, ptr %1659, align 16, !tbaa !62
  %1693 = getelementptr inbounds nuw <2 x double>, ptr %1692, i64 %1672
  %1694 = load <2 x double>, ptr %1693, align 16, !tbaa !25
  %1695 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1691, <2 x double> %1694, <2 x double> %1690)
  %1696 = fmul <2 x double> %1695, splat (double 5.000000e-01)
  %1697 = icmp eq i64 %1671, 1
  br i1 %1697, label %1713, label %1698

1698:                                             ; preds = %1665
  %1699 = load <2 x double>, ptr %1660, align 16, !tbaa !25
  %1700 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1696, <2 x double> %1699, <2 x double> %1661)
  %1701 = load <2 x double>, ptr %1334, align 16, !tbaa !25
  %1702 = fmul <2 x double> %1643, %1701
  %1703 = load <2 x double>, ptr %1280, align 16, !tbaa !25
  %1704 = load <2 x double>, ptr %1282, align 16, !tbaa !25
  %1705 = load <2 x double>, ptr %1284, align 16, !tbaa !25
  %1706 = load <2 x double>, ptr %1286, align 16, !tbaa !25
  %1707 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1706, <2 x double> %1705)
  %1708 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1707, <2 x double> %1704)
  %1709 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1708, <2 x double> %1703)
  %1710 = fmul <2 x double> %1702, %1709
  %1711 = fsub <2 x double> %1710, %1700
  %1712 = fadd <2 x double> %1700, %1710
  br label %1719

1713:                                             ; preds = %1665
  %1714 = load <2 x double>, ptr %1388, align 16, !tbaa !25
  %1715 = load <2 x double>, ptr %1660, align 16, !tbaa !25
  %1716 = fmul <2 x double> %1696, splat (double -2.000000e+00)
  %1717 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1716, <2 x double> %1715, <2 x double> %1714)
  %1718 = fadd <2 x double> %1638, %1717
  br label %1719

1719:                                             ; preds = %1713, %1698
  %1720 = phi <2 x double> [ %1699, %1698 ], [ %1715, %1713 ]
  %1721 = phi <2 x double> [ %1711, %1698 ], [ %1718, %1713 ]
  %1722 = phi <2 x double> [ %1712, %1698 ], [ %1714, %1713 ]
  %1723 = fsub <2 x double> %1670, %1683
  %1724 = fmul <2 x double> %1684, %1723
  %1725 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1724, <2 x double> %1720, <2 x double> %1666)
  %1726 = fadd <2 x double> %1722, %1725
  %1727 = fneg <2 x double> %1667
  %1728 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1727, <2 x double> %1669, <2 x double> %1726)
  %1729 = fdiv <2 x double> splat (double 1.000000e+00), %1728
  %1730 = load ptr, ptr %1649, align 16, !tbaa !73
  %1731 = getelementptr inbounds nuw <2 x double>, ptr %1730, i64 %1672
  store <2 x double> %1683, ptr %1731, align 16, !tbaa !25
  %1732 = load ptr, ptr %1662, align 8, !tbaa !64
  %1733 = getelementptr inbounds nuw <2 x double>, ptr %1732, i64 %1672
  %1734 = load <2 x double>, ptr %1733, align 16, !tbaa !25
  %1735 = fneg <2 x double> %1734
  %1736 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1667, <2 x double> %1668, <2 x double> %1735)
  %1737 = fmul <2 x double> %1729, %1736
  %1738 = load ptr, ptr %1663, align 16, !tbaa !75
  %1739 = getelementptr inbounds nuw <2 x double>, ptr %1738, i64 %1672
  store <2 x double> %1737, ptr %1739, align 16, !tbaa !25
  %1740 = fmul <2 x double> %1721, %1729
  %1741 = load ptr, ptr %1664, align 8, !tbaa !76
  %1742 = getelementptr inbounds nuw <2 x double>, ptr %1741, i64 %1672
  store <2 x double> %1740, ptr %1742, align 16, !tbaa !25
  %1743 = icmp samesign ugt i64 %1671, 1
  br i1 %1743, label %1665, label %1744, !llvm.loop !77

1744:                                             ; preds = %1719, %1633
  %1745 = load <2 x i64>, ptr %1230, align 16, !tbaa !25
  %1746 = load <2 x double>, ptr %1388, align 16, !tbaa !25
  %1747 = getelementptr inbounds nuw i8, ptr %1149, i64 2048
  %1748 = load ptr, ptr %1747, align 16, !tbaa !75
  %1749 = load <2 x double>, ptr %1748, align 16, !tbaa !25
  %1750 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1746, <2 x double> %1749, <2 x double> %1607)
  %1751 = icmp eq <2 x i64> %1745, zeroinitializer
  %1752 = select <2 x i1> %1751, <2 x double> %1612, <2 x double> %1750
  %1753 = getelementptr inbounds nuw i8, ptr %1149, i64 1456
  store <2 x double> %1752, ptr %1753, align 16, !tbaa !25
  %1754 = getelementptr inbounds nuw i8, ptr %1149, i64 2056
  %1755 = load ptr, ptr %1754, align 8, !tbaa !76
  %1756 = load <2 x double>, ptr %1755, align 16, !tbaa !25
  %1757 = fsub <2 x double> splat (double 1.000000e+00), %1756
  %1758 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1746, <2 x double> %1757, <2 x double> %1609)
  %1759 = select <2 x i1> %1751, <2 x double> %1614, <2 x double> %1758
  br label %1760

1760:                                             ; preds = %1624, %1744
  %1761 = phi <2 x double> [ %1614, %1624 ], [ %1759, %1744 ]
  %1762 = getelementptr inbounds nuw i8, ptr %1149, i64 1472
  store <2 x double> %1761, ptr %1762, align 16, !tbaa !25
  %1763 = add nuw nsw i64 %1147, 1
  %1764 = load i64, ptr %140, align 16, !tbaa !16
  %1765 = icmp slt i64 %1763, %1764
  br i1 %1765, label %1146, label %1143, !llvm.loop !78

1766:                                             ; preds = %1866, %1141, %1143
  %1767 = phi <2 x double> [ %1142, %1141 ], [ %1144, %1143 ], [ %1144, %1866 ]
  %1768 = fcmp ogt <2 x double> %1767, zeroinitializer
  %1769 = bitcast <2 x i1> %1768 to i2
  %1770 = icmp eq i2 %1769, 0
  br i1 %1770, label %1873, label %1870

1771:                                             ; preds = %1143, %1866
  %1772 = phi i64 [ %1867, %1866 ], [ %1764, %1143 ]
  %1773 = phi i64 [ %1868, %1866 ], [ 0, %1143 ]
  %1774 = load ptr, ptr %141, align 8, !tbaa !27
  %1775 = getelementptr inbounds nuw %struct.Piece, ptr %1774, i64 %1773
  %1776 = getelementptr inbounds nuw i8, ptr %1775, i64 1872
  %1777 = load <2 x i64>, ptr %1776, align 16, !tbaa !25
  %1778 = getelementptr inbounds nuw i8, ptr %1775, i64 560
  %1779 = load <2 x double>, ptr %1778, align 16, !tbaa !25
  %1780 = fcmp ogt <2 x double> %1779, zeroinitializer
  %1781 = select <2 x i1> %1780, <2 x i64> %1777, <2 x i64> zeroinitializer
  %1782 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1781)
  %1783 = icmp eq i64 %1782, 0
  br i1 %1783, label %1866, label %1784

1784:                                             ; preds = %1771
  %1785 = load <2 x double>, ptr %178, align 16, !tbaa !25
  %1786 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1785, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1787 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1785, <2 x double> %1786, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1788 = load <2 x double>, ptr %179, align 16, !tbaa !25
  %1789 = getelementptr inbounds nuw i8, ptr %1775, i64 1456
  %1790 = load <2 x double>, ptr %1789, align 16, !tbaa !25
  %1791 = getelementptr inbounds nuw i8, ptr %1775, i64 1472
  %1792 = load <2 x double>, ptr %1791, align 16, !tbaa !25
  %1793 = fdiv <2 x double> %1790, %1792
  %1794 = fcmp olt <2 x double> %1793, %1785
  %1795 = select <2 x i1> %1794, <2 x double> %1793, <2 x double> %1785
  %1796 = getelementptr inbounds nuw i8, ptr %1775, i64 1392
  %1797 = load <2 x double>, ptr %1796, align 16, !tbaa !25
  %1798 = fcmp olt <2 x double> %1797, %1795
  %1799 = select <2 x i1> %1798, <2 x double> %1797, <2 x double> %1795
  %1800 = fneg <2 x double> %1792
  %1801 = getelementptr inbounds nuw i8, ptr %1775, i64 1776
  %1802 = load <2 x double>, ptr %1801, align 16, !tbaa !25
  br label %1806

1803:                                             ; preds = %1806
  %1804 = getelementptr inbounds nuw i8, ptr %1775, i64 1488
  store <2 x double> %1857, ptr %1804, align 16, !tbaa !25
  %1805 = load i64, ptr %140, align 16, !tbaa !16
  br label %1866

1806:                                             ; preds = %1784, %1806
  %1807 = phi <2 x i64> [ %1781, %1784 ], [ %1860, %1806 ]
  %1808 = phi i32 [ 0, %1784 ], [ %1861, %1806 ]
  %1809 = phi <2 x double> [ %1799, %1784 ], [ %1857, %1806 ]
  %1810 = fadd <2 x double> %1809, splat (double 2.731500e+02)
  %1811 = fcmp ogt <2 x double> %1809, zeroinitializer
  %1812 = select <2 x i1> %1811, <2 x double> %1809, <2 x double> zeroinitializer
  %1813 = fadd <2 x double> %1812, splat (double 2.731500e+02)
  %1814 = fadd <2 x double> %1813, splat (double 0xC08451671D164BD4)
  %1815 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %1814
  %1816 = fsub <2 x double> %1813, %1815
  %1817 = fadd <2 x double> %1816, splat (double 0x40923C3565924845)
  %1818 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1816, <2 x double> %1817, <2 x double> splat (double 0xC12619EA558539E6))
  %1819 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1816, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %1820 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1816, <2 x double> %1819, <2 x double> splat (double 0xC148A99584203885))
  %1821 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1816, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %1822 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1816, <2 x double> %1821, <2 x double> splat (double 0x4118B9E59F2691E5))
  %1823 = fmul <2 x double> %1822, splat (double 2.000000e+00)
  %1824 = fmul <2 x double> %1818, splat (double 4.000000e+00)
  %1825 = fneg <2 x double> %1822
  %1826 = fmul <2 x double> %1824, %1825
  %1827 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1820, <2 x double> %1820, <2 x double> %1826)
  %1828 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1827)
  %1829 = fsub <2 x double> %1828, %1820
  %1830 = fdiv <2 x double> %1823, %1829
  %1831 = fmul <2 x double> %1830, %1830
  %1832 = fmul <2 x double> %1831, splat (double 1.000000e+06)
  %1833 = fmul <2 x double> %1831, %1832
  %1834 = fmul <2 x double> %1810, splat (double 4.615260e+02)
  %1835 = fdiv <2 x double> %1833, %1834
  %1836 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1800, <2 x double> %1809, <2 x double> %1790)
  %1837 = fsub <2 x double> %1835, %1788
  %1838 = fcmp ogt <2 x double> %1837, zeroinitializer
  %1839 = select <2 x i1> %1838, <2 x double> %1837, <2 x double> zeroinitializer
  %1840 = fmul <2 x double> %1787, %1839
  %1841 = fdiv <2 x double> %1840, %1802
  %1842 = fsub <2 x double> %1836, %1841
  %1843 = fmul <2 x double> %1787, %1835
  %1844 = fdiv <2 x double> %1787, %1834
  %1845 = fadd <2 x double> %1844, splat (double -1.000000e+00)
  %1846 = fmul <2 x double> %1845, %1843
  %1847 = fdiv <2 x double> %1846, %1810
  %1848 = fdiv <2 x double> %1847, %1802
  %1849 = fcmp ule <2 x double> %1835, %1788
  %1850 = select <2 x i1> %1849, <2 x double> zeroinitializer, <2 x double> %1848
  %1851 = fsub <2 x double> %1800, %1850
  %1852 = fdiv <2 x double> %1842, %1851
  %1853 = fsub <2 x double> %1809, %1852
  %1854 = fcmp olt <2 x double> %1853, %1795
  %1855 = select <2 x i1> %1854, <2 x double> %1853, <2 x double> %1795
  %1856 = icmp eq <2 x i64> %1807, zeroinitializer
  %1857 = select <2 x i1> %1856, <2 x double> %1809, <2 x double> %1855
  %1858 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1852)
  %1859 = fcmp oge <2 x double> %1858, splat (double 0x3EB0C6F7A0B5ED8D)
  %1860 = select <2 x i1> %1859, <2 x i64> %1807, <2 x i64> zeroinitializer
  %1861 = add nuw nsw i32 %1808, 1
  %1862 = icmp samesign ult i32 %1808, 7
  %1863 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1860)
  %1864 = icmp ne i64 %1863, 0
  %1865 = select i1 %1862, i1 %1864, i1 false
  br i1 %1865, label %1806, label %1803, !llvm.loop !79

1866:                                             ; preds = %1771, %1803
  %1867 = phi i64 [ %1772, %1771 ], [ %1805, %1803 ]
  %1868 = add nuw nsw i64 %1773, 1
  %1869 = icmp slt i64 %1868, %1867
  br i1 %1869, label %1771, label %1766, !llvm.loop !80

1870:                                             ; preds = %1766
  %1871 = sext <2 x i1> %1768 to <2 x i64>
  %1872 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, <2 x i64> noundef %1871) #7
  br label %1873

1873:                                             ; preds = %1766, %1870
  %1874 = phi <2 x double> [ %1872, %1870 ], [ zeroinitializer, %1766 ]
  %1875 = load <2 x double>, ptr %177, align 16, !tbaa !25
  %1876 = fcmp ogt <2 x double> %1875, zeroinitializer
  %1877 = sext <2 x i1> %1876 to <2 x i64>
  %1878 = xor <2 x i64> %1877, splat (i64 -1)
  %1879 = load <2 x double>, ptr %150, align 16, !tbaa !25
  %1880 = fcmp oeq <2 x double> %1879, splat (double 1.000000e+00)
  %1881 = fcmp oeq <2 x double> %1879, splat (double 2.000000e+00)
  %1882 = or <2 x i1> %1880, %1881
  %1883 = select <2 x i1> %1882, <2 x i64> %1878, <2 x i64> zeroinitializer
  %1884 = xor <2 x i64> %1883, %1877
  %1885 = load <2 x double>, ptr %178, align 16, !tbaa !25
  %1886 = load <2 x double>, ptr %180, align 16, !tbaa !25
  %1887 = load <2 x double>, ptr %181, align 16, !tbaa !25
  %1888 = icmp eq <2 x i64> %1884, splat (i64 -1)
  %1889 = select <2 x i1> %1888, <2 x double> %1887, <2 x double> %1886
  %1890 = bitcast <2 x i1> %1876 to i2
  %1891 = icmp eq i2 %1890, 0
  br i1 %1891, label %1923, label %1892

1892:                                             ; preds = %1873
  %1893 = select <2 x i1> %1876, <2 x double> %1874, <2 x double> %1889
  %1894 = fmul <2 x double> %1893, splat (double 0x3EB0C6F7A0B5ED8D)
  %1895 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1894)
  %1896 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1895)
  %1897 = fmul <2 x double> %1896, %1896
  %1898 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1896, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %1897)
  %1899 = fadd <2 x double> %1898, splat (double 0x402DD4891DBECC6B)
  %1900 = fmul <2 x double> %1896, splat (double 0x40C77A698FD9BCCA)
  %1901 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1897, <2 x double> splat (double 0x40923C3565924845), <2 x double> %1900)
  %1902 = fadd <2 x double> %1901, splat (double 0xC0B2D7440748F0B3)
  %1903 = fmul <2 x double> %1896, splat (double 0xC148A99584203885)
  %1904 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1897, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %1903)
  %1905 = fadd <2 x double> %1904, splat (double 0x4118B9E59F2691E5)
  %1906 = fmul <2 x double> %1905, splat (double 2.000000e+00)
  %1907 = fneg <2 x double> %1902
  %1908 = fmul <2 x double> %1899, splat (double 4.000000e+00)
  %1909 = fneg <2 x double> %1905
  %1910 = fmul <2 x double> %1908, %1909
  %1911 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1902, <2 x double> %1902, <2 x double> %1910)
  %1912 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1911)
  %1913 = fsub <2 x double> %1907, %1912
  %1914 = fdiv <2 x double> %1906, %1913
  %1915 = fadd <2 x double> %1914, splat (double 0x408451671D164BD4)
  %1916 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1914, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %1917 = fmul <2 x double> %1916, splat (double -4.000000e+00)
  %1918 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1915, <2 x double> %1915, <2 x double> %1917)
  %1919 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1918)
  %1920 = fsub <2 x double> %1915, %1919
  %1921 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1920, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %1922 = select <2 x i1> %1876, <2 x double> %1921, <2 x double> %1885
  br label %1923

1923:                                             ; preds = %1892, %1873
  %1924 = phi <2 x double> [ %1893, %1892 ], [ %1889, %1873 ]
  %1925 = phi <2 x double> [ %1922, %1892 ], [ %1885, %1873 ]
  %1926 = load <2 x double>, ptr %160, align 16, !tbaa !25
  %1927 = load <2 x double>, ptr %182, align 16, !tbaa !25
  %1928 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %1929 = load <2 x double>, ptr %183, align 16, !tbaa !25
  %1930 = fmul <2 x double> %1928, %1929
  %1931 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1926, <2 x double> %1927, <2 x double> %1930)
  %1932 = load <2 x double>, ptr %184, align 16, !tbaa !25
  %1933 = load <2 x double>, ptr %185, align 16, !tbaa !25
  %1934 = load <2 x double>, ptr %186, align 16, !tbaa !25
  %1935 = fneg <2 x double> %1931
  %1936 = fmul <2 x double> %1934, %1935
  %1937 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1932, <2 x double> %1933, <2 x double> %1936)
  %1938 = load <2 x double>, ptr %159, align 16, !tbaa !25
  %1939 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1934, <2 x double> %1938, <2 x double> %1932)
  %1940 = fdiv <2 x double> %1937, %1939
  %1941 = load <2 x double>, ptr %187, align 16, !tbaa !25
  %1942 = select <2 x i1> %1888, <2 x double> %1941, <2 x double> %1886
  store <2 x double> %1942, ptr %187, align 16, !tbaa !25
  %1943 = load <2 x double>, ptr %188, align 16, !tbaa !25
  %1944 = select <2 x i1> %1888, <2 x double> %1943, <2 x double> %1940
  store <2 x double> %1944, ptr %188, align 16, !tbaa !25
  store <2 x double> %1924, ptr %181, align 16, !tbaa !25
  %1945 = load <2 x i64>, ptr %122, align 16, !tbaa !25
  %1946 = and <2 x i64> %1945, %1883
  %1947 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1946)
  %1948 = icmp eq i64 %1947, 0
  br i1 %1948, label %2413, label %1949

1949:                                             ; preds = %1923
  %1950 = load <2 x double>, ptr %189, align 16, !tbaa !25
  %1951 = load <2 x double>, ptr %190, align 16, !tbaa !25
  %1952 = fmul <2 x double> %1928, %1951
  %1953 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1926, <2 x double> %1950, <2 x double> %1952)
  %1954 = load <2 x double>, ptr %191, align 16, !tbaa !25
  %1955 = load <2 x double>, ptr %192, align 16, !tbaa !25
  %1956 = fdiv <2 x double> %1954, %1955
  %1957 = fmul <2 x double> %1886, splat (double 3.000000e-01)
  %1958 = load <2 x double>, ptr %193, align 16, !tbaa !25
  %1959 = fadd <2 x double> %1886, %1958
  %1960 = fadd <2 x double> %1959, splat (double 2.000000e+05)
  %1961 = fmul <2 x double> %1955, splat (double 2.870530e+02)
  %1962 = fdiv <2 x double> %1886, %1961
  %1963 = fcmp ogt <2 x double> %1924, %1957
  %1964 = select <2 x i1> %1963, <2 x double> %1924, <2 x double> %1957
  %1965 = fcmp olt <2 x double> %1964, %1960
  %1966 = select <2 x i1> %1965, <2 x double> %1964, <2 x double> %1960
  %1967 = icmp eq <2 x i64> %1883, zeroinitializer
  %1968 = select <2 x i1> %1967, <2 x double> %1924, <2 x double> %1966
  %1969 = fdiv <2 x double> %1942, splat (double 2.870530e+02)
  %1970 = fmul <2 x double> %1962, splat (double 2.000000e+00)
  %1971 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1970)
  br label %1972

1972:                                             ; preds = %2199, %1949
  %1973 = phi <2 x double> [ %1925, %1949 ], [ %2007, %2199 ]
  %1974 = phi <2 x double> [ %1957, %1949 ], [ %2356, %2199 ]
  %1975 = phi <2 x double> [ %1960, %1949 ], [ %2353, %2199 ]
  %1976 = phi <2 x i64> [ %1946, %1949 ], [ %2368, %2199 ]
  %1977 = phi i32 [ 0, %1949 ], [ %2373, %2199 ]
  %1978 = phi <2 x double> [ %1968, %1949 ], [ %2370, %2199 ]
  %1979 = fmul <2 x double> %1978, splat (double 0x3EB0C6F7A0B5ED8D)
  %1980 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1979)
  %1981 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1980)
  %1982 = fmul <2 x double> %1981, %1981
  %1983 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1981, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %1982)
  %1984 = fadd <2 x double> %1983, splat (double 0x402DD4891DBECC6B)
  %1985 = fmul <2 x double> %1981, splat (double 0x40C77A698FD9BCCA)
  %1986 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1982, <2 x double> splat (double 0x40923C3565924845), <2 x double> %1985)
  %1987 = fadd <2 x double> %1986, splat (double 0xC0B2D7440748F0B3)
  %1988 = fmul <2 x double> %1981, splat (double 0xC148A99584203885)
  %1989 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1982, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %1988)
  %1990 = fadd <2 x double> %1989, splat (double 0x4118B9E59F2691E5)
  %1991 = fmul <2 x double> %1990, splat (double 2.000000e+00)
  %1992 = fneg <2 x double> %1987
  %1993 = fmul <2 x double> %1984, splat (double 4.000000e+00)
  %1994 = fneg <2 x double> %1990
  %1995 = fmul <2 x double> %1993, %1994
  %1996 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1987, <2 x double> %1987, <2 x double> %1995)
  %1997 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1996)
  %1998 = fsub <2 x double> %1992, %1997
  %1999 = fdiv <2 x double> %1991, %1998
  %2000 = fadd <2 x double> %1999, splat (double 0x408451671D164BD4)
  %2001 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1999, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2002 = fmul <2 x double> %2001, splat (double -4.000000e+00)
  %2003 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2000, <2 x double> %2000, <2 x double> %2002)
  %2004 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2003)
  %2005 = fsub <2 x double> %2000, %2004
  %2006 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2005, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2007 = select <2 x i1> %1967, <2 x double> %1973, <2 x double> %2006
  %2008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2007, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2009 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2007, <2 x double> %2008, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2010 = load i64, ptr %140, align 16, !tbaa !16, !noalias !81
  %2011 = icmp sgt i64 %2010, 0
  br i1 %2011, label %2012, label %2199

2012:                                             ; preds = %1972
  %2013 = fdiv <2 x double> splat (double 1.000000e+00), %2009
  %2014 = fadd <2 x double> %2007, splat (double 1.000000e-09)
  br label %2015

2015:                                             ; preds = %2012, %2125
  %2016 = phi i64 [ 0, %2012 ], [ %2196, %2125 ]
  %2017 = phi <2 x double> [ zeroinitializer, %2012 ], [ %2194, %2125 ]
  %2018 = phi <2 x double> [ zeroinitializer, %2012 ], [ %2195, %2125 ]
  %2019 = load ptr, ptr %141, align 8, !tbaa !27, !noalias !81
  %2020 = getelementptr inbounds nuw %struct.Piece, ptr %2019, i64 %2016
  %2021 = getelementptr inbounds nuw i8, ptr %2020, i64 1456
  %2022 = load <2 x double>, ptr %2021, align 16, !tbaa !25, !noalias !81
  %2023 = getelementptr inbounds nuw i8, ptr %2020, i64 1472
  %2024 = load <2 x double>, ptr %2023, align 16, !tbaa !25, !noalias !81
  %2025 = getelementptr inbounds nuw i8, ptr %2020, i64 1824
  %2026 = load <2 x double>, ptr %2025, align 16, !tbaa !25, !noalias !81
  %2027 = fcmp ule <2 x double> %2026, splat (double 1.000000e+00)
  %2028 = fmul <2 x double> %2007, %2024
  %2029 = fcmp ogt <2 x double> %2022, %2028
  %2030 = and <2 x i1> %2027, %2029
  %2031 = fneg <2 x double> %2024
  %2032 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2031, <2 x double> %2007, <2 x double> %2022)
  %2033 = fmul <2 x double> %2013, %2032
  %2034 = select <2 x i1> %2030, <2 x double> %2033, <2 x double> zeroinitializer
  %2035 = fmul <2 x double> %2013, %2031
  %2036 = fdiv <2 x double> %2022, %2024
  %2037 = select <2 x i1> %2030, <2 x double> %2007, <2 x double> %2036
  %2038 = getelementptr inbounds nuw i8, ptr %2020, i64 1872
  %2039 = load <2 x i64>, ptr %2038, align 16, !tbaa !25, !noalias !81
  %2040 = getelementptr inbounds nuw i8, ptr %2020, i64 560
  %2041 = load <2 x double>, ptr %2040, align 16, !tbaa !25, !noalias !81
  %2042 = fcmp ule <2 x double> %2041, zeroinitializer
  %2043 = xor <2 x i1> %2027, splat (i1 true)
  %2044 = select <2 x i1> %2043, <2 x i1> splat (i1 true), <2 x i1> %2042
  %2045 = getelementptr inbounds nuw i8, ptr %2020, i64 1488
  %2046 = load <2 x double>, ptr %2045, align 16, !tbaa !25, !noalias !81
  %2047 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2031, <2 x double> %2046, <2 x double> %2022)
  %2048 = fcmp ogt <2 x double> %2047, zeroinitializer
  %2049 = select <2 x i1> %2048, <2 x double> %2047, <2 x double> zeroinitializer
  %2050 = fmul <2 x double> %2013, %2049
  %2051 = icmp eq <2 x i64> %2039, zeroinitializer
  %2052 = select <2 x i1> %2044, <2 x i1> splat (i1 true), <2 x i1> %2051
  %2053 = select <2 x i1> %2052, <2 x double> %2034, <2 x double> %2050
  %2054 = select <2 x i1> %2052, <2 x double> %2037, <2 x double> %2046
  %2055 = select <2 x i1> %2052, <2 x i1> %2030, <2 x i1> zeroinitializer
  %2056 = select <2 x i1> %2055, <2 x double> %2035, <2 x double> zeroinitializer
  %2057 = load i64, ptr %131, align 8, !tbaa !20, !noalias !84
  %2058 = sitofp i64 %2057 to double
  %2059 = insertelement <2 x double> poison, double %2058, i64 0
  %2060 = shufflevector <2 x double> %2059, <2 x double> poison, <2 x i32> zeroinitializer
  %2061 = icmp sgt i64 %2057, 0
  br i1 %2061, label %2062, label %2125

2062:                                             ; preds = %2015
  %2063 = getelementptr inbounds nuw i8, ptr %2020, i64 1944
  %2064 = load ptr, ptr %2063, align 8, !tbaa !70, !noalias !84
  %2065 = getelementptr inbounds nuw i8, ptr %2020, i64 1952
  %2066 = load ptr, ptr %2065, align 16, !tbaa !71, !noalias !84
  %2067 = getelementptr inbounds nuw i8, ptr %2020, i64 1888
  %2068 = load i64, ptr %2067, align 16, !tbaa !30, !noalias !84
  %2069 = getelementptr inbounds nuw i8, ptr %2020, i64 1968
  %2070 = getelementptr inbounds nuw i8, ptr %2020, i64 1960
  %2071 = getelementptr inbounds nuw i8, ptr %2020, i64 1976
  br label %2072

2072:                                             ; preds = %2062, %2107
  %2073 = phi <2 x i64> [ splat (i64 -1), %2062 ], [ %2087, %2107 ]
  %2074 = phi i64 [ %2057, %2062 ], [ %2078, %2107 ]
  %2075 = phi <2 x double> [ %2060, %2062 ], [ %2123, %2107 ]
  %2076 = phi <2 x double> [ zeroinitializer, %2062 ], [ %2119, %2107 ]
  %2077 = phi <2 x double> [ zeroinitializer, %2062 ], [ %2117, %2107 ]
  %2078 = add nsw i64 %2074, -1
  %2079 = getelementptr inbounds nuw <2 x double>, ptr %2064, i64 %2078
  %2080 = load <2 x double>, ptr %2079, align 16, !tbaa !25, !noalias !84
  %2081 = getelementptr inbounds nuw <2 x double>, ptr %2066, i64 %2078
  %2082 = load <2 x double>, ptr %2081, align 16, !tbaa !25, !noalias !84
  %2083 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2082, <2 x double> %2007, <2 x double> %2080)
  %2084 = fcmp ogt <2 x double> %2083, %2014
  %2085 = select <2 x i1> %2084, <2 x i64> %2073, <2 x i64> zeroinitializer
  %2086 = icmp sgt i64 %2074, %2068
  %2087 = select i1 %2086, <2 x i64> %2085, <2 x i64> zeroinitializer
  %2088 = icmp slt i64 %2074, %2057
  br i1 %2088, label %2089, label %2102

2089:                                             ; preds = %2072
  %2090 = load ptr, ptr %2069, align 16, !tbaa !68, !noalias !84
  %2091 = getelementptr inbounds nuw <2 x double>, ptr %2090, i64 %2074
  %2092 = load <2 x double>, ptr %2091, align 16, !tbaa !25, !noalias !84
  %2093 = fsub <2 x double> %2083, %2007
  %2094 = fmul <2 x double> %2093, %2092
  %2095 = icmp eq <2 x i64> %2087, %2073
  %2096 = select <2 x i1> %2095, <2 x double> zeroinitializer, <2 x double> %2094
  %2097 = fadd <2 x double> %2077, %2096
  %2098 = fadd <2 x double> %2082, splat (double -1.000000e+00)
  %2099 = fmul <2 x double> %2098, %2092
  %2100 = select <2 x i1> %2095, <2 x double> zeroinitializer, <2 x double> %2099
  %2101 = fadd <2 x double> %2076, %2100
  br label %2102

2102:                                             ; preds = %2089, %2072
  %2103 = phi <2 x double> [ %2097, %2089 ], [ %2077, %2072 ]
  %2104 = phi <2 x double> [ %2101, %2089 ], [ %2076, %2072 ]
  %2105 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2087)
  %2106 = icmp eq i64 %2105, 0
  br i1 %2106, label %2125, label %2107

2107:                                             ; preds = %2102
  %2108 = load ptr, ptr %2070, align 8, !tbaa !67, !noalias !84
  %2109 = getelementptr inbounds nuw <2 x double>, ptr %2108, i64 %2078
  %2110 = load <2 x double>, ptr %2109, align 16, !tbaa !25, !noalias !84
  %2111 = load ptr, ptr %2071, align 8, !tbaa !69, !noalias !84
  %2112 = getelementptr inbounds nuw <2 x double>, ptr %2111, i64 %2078
  %2113 = load <2 x double>, ptr %2112, align 16, !tbaa !25, !noalias !84
  %2114 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2113, <2 x double> %2007, <2 x double> %2110)
  %2115 = icmp eq <2 x i64> %2087, zeroinitializer
  %2116 = select <2 x i1> %2115, <2 x double> zeroinitializer, <2 x double> %2114
  %2117 = fadd <2 x double> %2103, %2116
  %2118 = select <2 x i1> %2115, <2 x double> zeroinitializer, <2 x double> %2113
  %2119 = fadd <2 x double> %2104, %2118
  %2120 = uitofp nneg i64 %2078 to double
  %2121 = insertelement <2 x double> poison, double %2120, i64 0
  %2122 = shufflevector <2 x double> %2121, <2 x double> poison, <2 x i32> zeroinitializer
  %2123 = select <2 x i1> %2115, <2 x double> %2075, <2 x double> %2122
  %2124 = icmp samesign ugt i64 %2074, 1
  br i1 %2124, label %2072, label %2125, !llvm.loop !87

2125:                                             ; preds = %2107, %2102, %2015
  %2126 = phi <2 x double> [ %2060, %2015 ], [ %2075, %2102 ], [ %2123, %2107 ]
  %2127 = phi <2 x double> [ zeroinitializer, %2015 ], [ %2103, %2102 ], [ %2117, %2107 ]
  %2128 = phi <2 x double> [ zeroinitializer, %2015 ], [ %2104, %2102 ], [ %2119, %2107 ]
  %2129 = getelementptr inbounds nuw i8, ptr %2020, i64 1520
  %2130 = load <2 x double>, ptr %2129, align 16, !tbaa !25, !noalias !81
  %2131 = getelementptr inbounds nuw i8, ptr %2020, i64 1376
  %2132 = load <2 x double>, ptr %2131, align 16, !tbaa !25, !noalias !81
  %2133 = getelementptr inbounds nuw i8, ptr %2020, i64 1760
  %2134 = load <2 x double>, ptr %2133, align 16, !tbaa !25, !noalias !81
  %2135 = fneg <2 x double> %2134
  %2136 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2130, <2 x double> %2132, <2 x double> %2135)
  %2137 = getelementptr inbounds nuw i8, ptr %2020, i64 1744
  %2138 = load <2 x double>, ptr %2137, align 16, !tbaa !25, !noalias !81
  %2139 = fadd <2 x double> %2130, %2138
  %2140 = getelementptr inbounds nuw i8, ptr %2020, i64 1840
  %2141 = load <2 x i64>, ptr %2140, align 16, !tbaa !25, !noalias !81
  %2142 = getelementptr inbounds nuw i8, ptr %2020, i64 2048
  %2143 = load ptr, ptr %2142, align 16, !tbaa !75, !noalias !81
  %2144 = load <2 x double>, ptr %2143, align 16, !tbaa !25, !noalias !81
  %2145 = fmul <2 x double> %2130, %2144
  %2146 = icmp eq <2 x i64> %2141, zeroinitializer
  %2147 = select <2 x i1> %2146, <2 x double> %2136, <2 x double> %2145
  %2148 = getelementptr inbounds nuw i8, ptr %2020, i64 2056
  %2149 = load ptr, ptr %2148, align 8, !tbaa !76, !noalias !81
  %2150 = load <2 x double>, ptr %2149, align 16, !tbaa !25, !noalias !81
  %2151 = fsub <2 x double> splat (double 1.000000e+00), %2150
  %2152 = fmul <2 x double> %2130, %2151
  %2153 = select <2 x i1> %2146, <2 x double> %2139, <2 x double> %2152
  %2154 = fneg <2 x double> %2153
  %2155 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2154, <2 x double> %2007, <2 x double> %2147)
  %2156 = fcmp olt <2 x double> %2126, %2060
  %2157 = and <2 x i1> %2027, %2156
  %2158 = fcmp ogt <2 x double> %2127, zeroinitializer
  %2159 = fcmp oge <2 x double> %2155, zeroinitializer
  %2160 = and <2 x i1> %2158, %2159
  %2161 = and <2 x i1> %2157, %2160
  %2162 = sext <2 x i1> %2161 to <2 x i64>
  %2163 = xor <2 x i64> %2162, splat (i64 -1)
  %2164 = fadd <2 x double> %2127, %2155
  %2165 = fcmp ogt <2 x double> %2164, zeroinitializer
  %2166 = and <2 x i1> %2157, %2165
  %2167 = select <2 x i1> %2166, <2 x i64> %2163, <2 x i64> zeroinitializer
  %2168 = or <2 x i64> %2167, %2162
  %2169 = fmul <2 x double> %2013, %2155
  %2170 = select <2 x i1> %2161, <2 x double> %2169, <2 x double> zeroinitializer
  %2171 = icmp eq <2 x i64> %2168, zeroinitializer
  %2172 = select <2 x i1> %2171, <2 x double> %2053, <2 x double> %2170
  %2173 = select <2 x i1> %2171, <2 x double> %2054, <2 x double> %2007
  %2174 = fsub <2 x double> %2128, %2153
  %2175 = fmul <2 x double> %2013, %2174
  %2176 = select <2 x i1> %2171, <2 x double> %2056, <2 x double> %2175
  %2177 = getelementptr inbounds nuw i8, ptr %2020, i64 1408
  store <2 x double> %2172, ptr %2177, align 16, !tbaa !25, !noalias !81
  %2178 = getelementptr inbounds nuw i8, ptr %2020, i64 1392
  store <2 x double> %2173, ptr %2178, align 16, !tbaa !25, !noalias !81
  %2179 = fmul <2 x double> %2013, %2127
  %2180 = fmul <2 x double> %2013, %2164
  %2181 = icmp eq <2 x i64> %2167, zeroinitializer
  %2182 = select <2 x i1> %2181, <2 x double> zeroinitializer, <2 x double> %2180
  %2183 = select <2 x i1> %2161, <2 x double> %2179, <2 x double> %2182
  %2184 = getelementptr inbounds nuw i8, ptr %2020, i64 1424
  store <2 x double> %2183, ptr %2184, align 16, !tbaa !25, !noalias !81
  %2185 = load i64, ptr %131, align 8, !tbaa !20, !noalias !81
  %2186 = sitofp i64 %2185 to double
  %2187 = insertelement <2 x double> poison, double %2186, i64 0
  %2188 = shufflevector <2 x double> %2187, <2 x double> poison, <2 x i32> zeroinitializer
  %2189 = select <2 x i1> %2171, <2 x double> %2188, <2 x double> %2126
  %2190 = getelementptr inbounds nuw i8, ptr %2020, i64 1440
  store <2 x double> %2189, ptr %2190, align 16, !tbaa !25, !noalias !81
  %2191 = getelementptr inbounds nuw i8, ptr %2020, i64 32
  %2192 = load <2 x double>, ptr %2191, align 16, !tbaa !25, !noalias !81
  %2193 = fadd <2 x double> %2172, %2183
  %2194 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2192, <2 x double> %2193, <2 x double> %2017)
  %2195 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2192, <2 x double> %2176, <2 x double> %2018)
  %2196 = add nuw nsw i64 %2016, 1
  %2197 = load i64, ptr %140, align 16, !tbaa !16, !noalias !81
  %2198 = icmp slt i64 %2196, %2197
  br i1 %2198, label %2015, label %2199, !llvm.loop !88

2199:                                             ; preds = %2125, %1972
  %2200 = phi <2 x double> [ zeroinitializer, %1972 ], [ %2195, %2125 ]
  %2201 = phi <2 x double> [ zeroinitializer, %1972 ], [ %2194, %2125 ]
  %2202 = fsub <2 x double> %1978, %1942
  %2203 = fcmp ogt <2 x double> %2202, zeroinitializer
  %2204 = select <2 x i1> %2203, <2 x double> %2202, <2 x double> zeroinitializer
  %2205 = fadd <2 x double> %2007, splat (double 2.731500e+02)
  %2206 = fdiv <2 x double> %2204, splat (double 4.615260e+02)
  %2207 = fadd <2 x double> %1969, %2206
  %2208 = load <2 x double>, ptr %192, align 16, !tbaa !25
  %2209 = fdiv <2 x double> %2207, %2208
  %2210 = fmul <2 x double> %2208, %2209
  %2211 = fdiv <2 x double> %1978, %2210
  %2212 = load <2 x double>, ptr %180, align 16, !tbaa !25, !noalias !89
  %2213 = fsub <2 x double> %1978, %2212
  %2214 = load <2 x double>, ptr %193, align 16, !tbaa !25, !noalias !89
  %2215 = fsub <2 x double> %2213, %2214
  %2216 = load <2 x double>, ptr %194, align 16, !tbaa !25, !noalias !89
  %2217 = load <2 x double>, ptr %150, align 16, !tbaa !25, !noalias !89
  %2218 = fcmp une <2 x double> %2217, splat (double 2.000000e+00)
  %2219 = load <2 x double>, ptr %195, align 16, !tbaa !25, !noalias !89
  %2220 = select <2 x i1> %2218, <2 x double> zeroinitializer, <2 x double> %2219
  %2221 = fadd <2 x double> %2216, %2220
  %2222 = fcmp ule <2 x double> %2213, zeroinitializer
  %2223 = fcmp ule <2 x double> %2221, zeroinitializer
  %2224 = or <2 x i1> %2222, %2223
  %2225 = fmul <2 x double> %2209, splat (double 2.000000e+00)
  %2226 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2225)
  %2227 = fmul <2 x double> %2226, %2221
  %2228 = fadd <2 x double> %2213, splat (double 2.000000e+02)
  %2229 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2228)
  %2230 = select <2 x i1> %2222, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2229
  %2231 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2213, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2232 = fmul <2 x double> %2231, %2227
  %2233 = fmul <2 x double> %2230, %2230
  %2234 = fmul <2 x double> %2230, %2233
  %2235 = fdiv <2 x double> %2232, %2234
  %2236 = fmul <2 x double> %2213, %2227
  %2237 = fdiv <2 x double> %2236, %2230
  %2238 = select <2 x i1> %2224, <2 x double> zeroinitializer, <2 x double> %2237
  %2239 = select <2 x i1> %2224, <2 x double> zeroinitializer, <2 x double> %2235
  %2240 = fcmp ule <2 x double> %2215, zeroinitializer
  %2241 = load <2 x double>, ptr %196, align 16, !tbaa !25, !noalias !89
  %2242 = fmul <2 x double> %2215, %2241
  %2243 = select <2 x i1> %2240, <2 x double> zeroinitializer, <2 x double> %2242
  %2244 = fadd <2 x double> %2243, %2238
  %2245 = select <2 x i1> %2240, <2 x double> zeroinitializer, <2 x double> %2241
  %2246 = fadd <2 x double> %2245, %2239
  %2247 = load <2 x double>, ptr %197, align 16, !tbaa !25
  %2248 = fsub <2 x double> %2212, %1978
  %2249 = fcmp ule <2 x double> %2248, zeroinitializer
  %2250 = fcmp ule <2 x double> %2247, zeroinitializer
  %2251 = or <2 x i1> %2249, %2250
  %2252 = fmul <2 x double> %1971, %2247
  %2253 = fadd <2 x double> %2248, splat (double 2.000000e+02)
  %2254 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2253)
  %2255 = select <2 x i1> %2249, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2254
  %2256 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2248, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2257 = fmul <2 x double> %2256, %2252
  %2258 = fmul <2 x double> %2255, %2255
  %2259 = fmul <2 x double> %2255, %2258
  %2260 = fdiv <2 x double> %2257, %2259
  %2261 = fmul <2 x double> %2248, %2252
  %2262 = fdiv <2 x double> %2261, %2255
  %2263 = load <2 x double>, ptr %160, align 16, !tbaa !25, !noalias !92
  %2264 = load <2 x double>, ptr %182, align 16, !tbaa !25, !noalias !92
  %2265 = load <2 x double>, ptr %161, align 16, !tbaa !25, !noalias !92
  %2266 = load <2 x double>, ptr %183, align 16, !tbaa !25, !noalias !92
  %2267 = fmul <2 x double> %2265, %2266
  %2268 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2263, <2 x double> %2264, <2 x double> %2267)
  %2269 = load <2 x double>, ptr %186, align 16, !tbaa !25, !noalias !92
  %2270 = load <2 x double>, ptr %159, align 16, !tbaa !25, !noalias !92
  %2271 = load <2 x double>, ptr %184, align 16, !tbaa !25, !noalias !92
  %2272 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2269, <2 x double> %2270, <2 x double> %2271)
  %2273 = load <2 x double>, ptr %185, align 16, !tbaa !25, !noalias !92
  %2274 = fneg <2 x double> %2268
  %2275 = fmul <2 x double> %2269, %2274
  %2276 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2271, <2 x double> %2273, <2 x double> %2275)
  %2277 = fdiv <2 x double> %2276, %2272
  %2278 = fcmp ogt <2 x double> %2204, splat (double 2.000000e+03)
  %2279 = select <2 x i1> %2278, <2 x double> %2204, <2 x double> splat (double 2.000000e+03)
  %2280 = fmul <2 x double> %2279, splat (double 0x3EB0C6F7A0B5ED8D)
  %2281 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2280)
  %2282 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2281)
  %2283 = fmul <2 x double> %2282, %2282
  %2284 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2282, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2283)
  %2285 = fadd <2 x double> %2284, splat (double 0x402DD4891DBECC6B)
  %2286 = fmul <2 x double> %2282, splat (double 0x40C77A698FD9BCCA)
  %2287 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2283, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2286)
  %2288 = fadd <2 x double> %2287, splat (double 0xC0B2D7440748F0B3)
  %2289 = fmul <2 x double> %2282, splat (double 0xC148A99584203885)
  %2290 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2283, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2289)
  %2291 = fadd <2 x double> %2290, splat (double 0x4118B9E59F2691E5)
  %2292 = fmul <2 x double> %2291, splat (double 2.000000e+00)
  %2293 = fneg <2 x double> %2288
  %2294 = fmul <2 x double> %2285, splat (double 4.000000e+00)
  %2295 = fneg <2 x double> %2291
  %2296 = fmul <2 x double> %2294, %2295
  %2297 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2288, <2 x double> %2288, <2 x double> %2296)
  %2298 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2297)
  %2299 = fsub <2 x double> %2293, %2298
  %2300 = fdiv <2 x double> %2292, %2299
  %2301 = fadd <2 x double> %2300, splat (double 0x408451671D164BD4)
  %2302 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2300, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2303 = fmul <2 x double> %2302, splat (double -4.000000e+00)
  %2304 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2301, <2 x double> %2301, <2 x double> %2303)
  %2305 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2304)
  %2306 = fsub <2 x double> %2301, %2305
  %2307 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2306, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2308 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2307, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2309 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2307, <2 x double> %2308, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2310 = fadd <2 x double> %2307, splat (double 2.731500e+02)
  %2311 = fcmp ule <2 x double> %2307, %2277
  %2312 = load <2 x double>, ptr %198, align 16, !tbaa !25, !noalias !92
  %2313 = fmul <2 x double> %2272, %2312
  %2314 = fadd <2 x double> %2272, %2312
  %2315 = fdiv <2 x double> %2313, %2314
  %2316 = fdiv <2 x double> %2315, %2309
  %2317 = fmul <2 x double> %2310, splat (double 4.615260e+02)
  %2318 = fmul <2 x double> %2279, %2309
  %2319 = fmul <2 x double> %2307, %2312
  %2320 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2277, <2 x double> %2272, <2 x double> %2319)
  %2321 = fdiv <2 x double> %2320, %2314
  %2322 = select <2 x i1> %2311, <2 x double> %2277, <2 x double> %2321
  store <2 x double> %2322, ptr %188, align 16, !tbaa !25, !noalias !92
  %2323 = fsub <2 x double> %2307, %2277
  %2324 = fmul <2 x double> %2323, %2316
  %2325 = select <2 x i1> %2311, <2 x double> zeroinitializer, <2 x double> %2324
  %2326 = fmul <2 x double> %2205, splat (double 4.615260e+02)
  %2327 = fmul <2 x double> %2205, %2326
  %2328 = fmul <2 x double> %1978, %2009
  %2329 = fdiv <2 x double> %2327, %2328
  %2330 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2270, <2 x double> %1978, <2 x double> %1953)
  %2331 = fsub <2 x double> %2201, %2325
  %2332 = fmul <2 x double> %2331, splat (double -4.615260e+02)
  %2333 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1956, <2 x double> %2330, <2 x double> %2332)
  %2334 = fmul <2 x double> %2262, splat (double -2.870530e+02)
  %2335 = select <2 x i1> %2251, <2 x double> splat (double -0.000000e+00), <2 x double> %2334
  %2336 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2211, <2 x double> %2244, <2 x double> %2335)
  %2337 = fadd <2 x double> %2336, %2333
  %2338 = fneg <2 x double> %2310
  %2339 = fmul <2 x double> %2317, %2338
  %2340 = fdiv <2 x double> %2339, %2318
  %2341 = fmul <2 x double> %2340, %2316
  %2342 = select <2 x i1> %2311, <2 x double> splat (double -0.000000e+00), <2 x double> %2341
  %2343 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2200, <2 x double> %2329, <2 x double> %2342)
  %2344 = fmul <2 x double> %2343, splat (double -4.615260e+02)
  %2345 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1956, <2 x double> %2270, <2 x double> %2344)
  %2346 = fmul <2 x double> %2260, splat (double 2.870530e+02)
  %2347 = select <2 x i1> %2251, <2 x double> zeroinitializer, <2 x double> %2346
  %2348 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2211, <2 x double> %2246, <2 x double> %2347)
  %2349 = fadd <2 x double> %2348, %2345
  %2350 = fcmp ule <2 x double> %2337, zeroinitializer
  %2351 = fcmp olt <2 x double> %1975, %1978
  %2352 = select <2 x i1> %2350, <2 x i1> splat (i1 true), <2 x i1> %2351
  %2353 = select <2 x i1> %2352, <2 x double> %1975, <2 x double> %1978
  %2354 = fcmp ogt <2 x double> %1974, %1978
  %2355 = select <2 x i1> %2354, <2 x double> %1974, <2 x double> %1978
  %2356 = select <2 x i1> %2350, <2 x double> %2355, <2 x double> %1974
  %2357 = fdiv <2 x double> %2337, %2349
  %2358 = fsub <2 x double> %1978, %2357
  %2359 = fcmp uge <2 x double> %2356, %2358
  %2360 = fcmp uge <2 x double> %2358, %2353
  %2361 = or <2 x i1> %2359, %2360
  %2362 = fadd <2 x double> %2356, %2353
  %2363 = fmul <2 x double> %2362, splat (double 5.000000e-01)
  %2364 = select <2 x i1> %2361, <2 x double> %2363, <2 x double> %2358
  %2365 = fsub <2 x double> %2364, %1978
  %2366 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2365)
  %2367 = fcmp oge <2 x double> %2366, splat (double 2.000000e-01)
  %2368 = select <2 x i1> %2367, <2 x i64> %1976, <2 x i64> zeroinitializer
  %2369 = icmp eq <2 x i64> %2368, zeroinitializer
  %2370 = select <2 x i1> %2369, <2 x double> %1978, <2 x double> %2364
  %2371 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2368)
  %2372 = icmp ne i64 %2371, 0
  %2373 = add nuw nsw i32 %1977, 1
  %2374 = icmp samesign ult i32 %1977, 59
  %2375 = select i1 %2372, i1 %2374, i1 false
  br i1 %2375, label %1972, label %2376, !llvm.loop !95

2376:                                             ; preds = %2199
  %2377 = load <2 x double>, ptr %160, align 16, !tbaa !25
  %2378 = load <2 x double>, ptr %199, align 16, !tbaa !25
  %2379 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %2380 = load <2 x double>, ptr %200, align 16, !tbaa !25
  %2381 = fmul <2 x double> %2379, %2380
  %2382 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2377, <2 x double> %2378, <2 x double> %2381)
  %2383 = load <2 x double>, ptr %197, align 16, !tbaa !25
  %2384 = load <2 x double>, ptr %180, align 16, !tbaa !25
  %2385 = fsub <2 x double> %2384, %2370
  %2386 = fcmp ule <2 x double> %2385, zeroinitializer
  %2387 = fcmp ule <2 x double> %2383, zeroinitializer
  %2388 = or <2 x i1> %2387, %2386
  %2389 = fmul <2 x double> %1971, %2383
  %2390 = fadd <2 x double> %2385, splat (double 2.000000e+02)
  %2391 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2390)
  %2392 = select <2 x i1> %2386, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2391
  %2393 = fmul <2 x double> %2389, %2385
  %2394 = fdiv <2 x double> %2393, %2392
  %2395 = fmul <2 x double> %2394, splat (double 2.870530e+02)
  %2396 = select <2 x i1> %2388, <2 x double> zeroinitializer, <2 x double> %2395
  %2397 = fdiv <2 x double> %2396, %1956
  %2398 = fsub <2 x double> %2397, %2382
  %2399 = load <2 x double>, ptr %159, align 16, !tbaa !25
  %2400 = load <2 x double>, ptr %191, align 16, !tbaa !25
  %2401 = fmul <2 x double> %2209, %2400
  %2402 = fdiv <2 x double> %2244, %2401
  %2403 = fadd <2 x double> %2399, %2402
  %2404 = fdiv <2 x double> %2398, %2403
  %2405 = fcmp ogt <2 x double> %2404, zeroinitializer
  %2406 = select <2 x i1> %2405, <2 x double> %2404, <2 x double> zeroinitializer
  %2407 = fcmp olt <2 x double> %2406, %2370
  %2408 = select <2 x i1> %2407, <2 x double> %2406, <2 x double> %2370
  %2409 = load <2 x double>, ptr %187, align 16, !tbaa !25
  %2410 = select <2 x i1> %1967, <2 x double> %2409, <2 x double> %2408
  store <2 x double> %2410, ptr %187, align 16, !tbaa !25
  %2411 = select <2 x i1> %1967, <2 x double> %1944, <2 x double> %2322
  store <2 x double> %2411, ptr %188, align 16, !tbaa !25
  store <2 x double> %2370, ptr %181, align 16, !tbaa !25
  store <2 x double> %2007, ptr %201, align 16, !tbaa !25
  %2412 = load i64, ptr %140, align 16, !tbaa !16
  br label %2583

2413:                                             ; preds = %1923
  store <2 x double> %1925, ptr %201, align 16, !tbaa !25
  %2414 = load i64, ptr %140, align 16, !tbaa !16, !noalias !96
  %2415 = icmp sgt i64 %2414, 0
  br i1 %2415, label %2416, label %2586

2416:                                             ; preds = %2413
  %2417 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1925, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2418 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1925, <2 x double> %2417, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2419 = fdiv <2 x double> splat (double 1.000000e+00), %2418
  %2420 = fadd <2 x double> %1925, splat (double 1.000000e-09)
  br label %2421

2421:                                             ; preds = %2416, %2518
  %2422 = phi i64 [ 0, %2416 ], [ %2580, %2518 ]
  %2423 = load ptr, ptr %141, align 8, !tbaa !27, !noalias !96
  %2424 = getelementptr inbounds nuw %struct.Piece, ptr %2423, i64 %2422
  %2425 = getelementptr inbounds nuw i8, ptr %2424, i64 1456
  %2426 = load <2 x double>, ptr %2425, align 16, !tbaa !25, !noalias !96
  %2427 = getelementptr inbounds nuw i8, ptr %2424, i64 1472
  %2428 = load <2 x double>, ptr %2427, align 16, !tbaa !25, !noalias !96
  %2429 = getelementptr inbounds nuw i8, ptr %2424, i64 1824
  %2430 = load <2 x double>, ptr %2429, align 16, !tbaa !25, !noalias !96
  %2431 = fcmp ule <2 x double> %2430, splat (double 1.000000e+00)
  %2432 = fmul <2 x double> %1925, %2428
  %2433 = fcmp ogt <2 x double> %2426, %2432
  %2434 = and <2 x i1> %2431, %2433
  %2435 = fneg <2 x double> %2428
  %2436 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2435, <2 x double> %1925, <2 x double> %2426)
  %2437 = fmul <2 x double> %2419, %2436
  %2438 = select <2 x i1> %2434, <2 x double> %2437, <2 x double> zeroinitializer
  %2439 = fdiv <2 x double> %2426, %2428
  %2440 = select <2 x i1> %2434, <2 x double> %1925, <2 x double> %2439
  %2441 = getelementptr inbounds nuw i8, ptr %2424, i64 1872
  %2442 = load <2 x i64>, ptr %2441, align 16, !tbaa !25, !noalias !96
  %2443 = getelementptr inbounds nuw i8, ptr %2424, i64 560
  %2444 = load <2 x double>, ptr %2443, align 16, !tbaa !25, !noalias !96
  %2445 = fcmp ule <2 x double> %2444, zeroinitializer
  %2446 = xor <2 x i1> %2431, splat (i1 true)
  %2447 = select <2 x i1> %2446, <2 x i1> splat (i1 true), <2 x i1> %2445
  %2448 = getelementptr inbounds nuw i8, ptr %2424, i64 1488
  %2449 = load <2 x double>, ptr %2448, align 16, !tbaa !25, !noalias !96
  %2450 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2435, <2 x double> %2449, <2 x double> %2426)
  %2451 = fcmp ogt <2 x double> %2450, zeroinitializer
  %2452 = select <2 x i1> %2451, <2 x double> %2450, <2 x double> zeroinitializer
  %2453 = fmul <2 x double> %2419, %2452
  %2454 = icmp eq <2 x i64> %2442, zeroinitializer
  %2455 = select <2 x i1> %2447, <2 x i1> splat (i1 true), <2 x i1> %2454
  %2456 = select <2 x i1> %2455, <2 x double> %2438, <2 x double> %2453
  %2457 = select <2 x i1> %2455, <2 x double> %2440, <2 x double> %2449
  %2458 = load i64, ptr %131, align 8, !tbaa !20, !noalias !99
  %2459 = sitofp i64 %2458 to double
  %2460 = insertelement <2 x double> poison, double %2459, i64 0
  %2461 = shufflevector <2 x double> %2460, <2 x double> poison, <2 x i32> zeroinitializer
  %2462 = icmp sgt i64 %2458, 0
  br i1 %2462, label %2463, label %2518

2463:                                             ; preds = %2421
  %2464 = getelementptr inbounds nuw i8, ptr %2424, i64 1944
  %2465 = load ptr, ptr %2464, align 8, !tbaa !70, !noalias !99
  %2466 = getelementptr inbounds nuw i8, ptr %2424, i64 1952
  %2467 = load ptr, ptr %2466, align 16, !tbaa !71, !noalias !99
  %2468 = getelementptr inbounds nuw i8, ptr %2424, i64 1888
  %2469 = load i64, ptr %2468, align 16, !tbaa !30, !noalias !99
  %2470 = getelementptr inbounds nuw i8, ptr %2424, i64 1968
  %2471 = getelementptr inbounds nuw i8, ptr %2424, i64 1960
  %2472 = getelementptr inbounds nuw i8, ptr %2424, i64 1976
  br label %2473

2473:                                             ; preds = %2463, %2502
  %2474 = phi <2 x i64> [ splat (i64 -1), %2463 ], [ %2487, %2502 ]
  %2475 = phi i64 [ %2458, %2463 ], [ %2478, %2502 ]
  %2476 = phi <2 x double> [ zeroinitializer, %2463 ], [ %2512, %2502 ]
  %2477 = phi <2 x double> [ %2461, %2463 ], [ %2516, %2502 ]
  %2478 = add nsw i64 %2475, -1
  %2479 = getelementptr inbounds nuw <2 x double>, ptr %2465, i64 %2478
  %2480 = load <2 x double>, ptr %2479, align 16, !tbaa !25, !noalias !99
  %2481 = getelementptr inbounds nuw <2 x double>, ptr %2467, i64 %2478
  %2482 = load <2 x double>, ptr %2481, align 16, !tbaa !25, !noalias !99
  %2483 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2482, <2 x double> %1925, <2 x double> %2480)
  %2484 = fcmp ogt <2 x double> %2483, %2420
  %2485 = select <2 x i1> %2484, <2 x i64> %2474, <2 x i64> zeroinitializer
  %2486 = icmp sgt i64 %2475, %2469
  %2487 = select i1 %2486, <2 x i64> %2485, <2 x i64> zeroinitializer
  %2488 = icmp slt i64 %2475, %2458
  br i1 %2488, label %2489, label %2498

2489:                                             ; preds = %2473
  %2490 = load ptr, ptr %2470, align 16, !tbaa !68, !noalias !99
  %2491 = getelementptr inbounds nuw <2 x double>, ptr %2490, i64 %2475
  %2492 = load <2 x double>, ptr %2491, align 16, !tbaa !25, !noalias !99
  %2493 = fsub <2 x double> %2483, %1925
  %2494 = fmul <2 x double> %2493, %2492
  %2495 = icmp eq <2 x i64> %2487, %2474
  %2496 = select <2 x i1> %2495, <2 x double> zeroinitializer, <2 x double> %2494
  %2497 = fadd <2 x double> %2476, %2496
  br label %2498

2498:                                             ; preds = %2489, %2473
  %2499 = phi <2 x double> [ %2497, %2489 ], [ %2476, %2473 ]
  %2500 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2487)
  %2501 = icmp eq i64 %2500, 0
  br i1 %2501, label %2518, label %2502

2502:                                             ; preds = %2498
  %2503 = load ptr, ptr %2471, align 8, !tbaa !67, !noalias !99
  %2504 = getelementptr inbounds nuw <2 x double>, ptr %2503, i64 %2478
  %2505 = load <2 x double>, ptr %2504, align 16, !tbaa !25, !noalias !99
  %2506 = load ptr, ptr %2472, align 8, !tbaa !69, !noalias !99
  %2507 = getelementptr inbounds nuw <2 x double>, ptr %2506, i64 %2478
  %2508 = load <2 x double>, ptr %2507, align 16, !tbaa !25, !noalias !99
  %2509 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2508, <2 x double> %1925, <2 x double> %2505)
  %2510 = icmp eq <2 x i64> %2487, zeroinitializer
  %2511 = select <2 x i1> %2510, <2 x double> zeroinitializer, <2 x double> %2509
  %2512 = fadd <2 x double> %2499, %2511
  %2513 = uitofp nneg i64 %2478 to double
  %2514 = insertelement <2 x double> poison, double %2513, i64 0
  %2515 = shufflevector <2 x double> %2514, <2 x double> poison, <2 x i32> zeroinitializer
  %2516 = select <2 x i1> %2510, <2 x double> %2477, <2 x double> %2515
  %2517 = icmp samesign ugt i64 %2475, 1
  br i1 %2517, label %2473, label %2518, !llvm.loop !87

2518:                                             ; preds = %2502, %2498, %2421
  %2519 = phi <2 x double> [ %2461, %2421 ], [ %2477, %2498 ], [ %2516, %2502 ]
  %2520 = phi <2 x double> [ zeroinitializer, %2421 ], [ %2499, %2498 ], [ %2512, %2502 ]
  %2521 = getelementptr inbounds nuw i8, ptr %2424, i64 1520
  %2522 = load <2 x double>, ptr %2521, align 16, !tbaa !25, !noalias !96
  %2523 = getelementptr inbounds nuw i8, ptr %2424, i64 1376
  %2524 = load <2 x double>, ptr %2523, align 16, !tbaa !25, !noalias !96
  %2525 = getelementptr inbounds nuw i8, ptr %2424, i64 1760
  %2526 = load <2 x double>, ptr %2525, align 16, !tbaa !25, !noalias !96
  %2527 = fneg <2 x double> %2526
  %2528 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2522, <2 x double> %2524, <2 x double> %2527)
  %2529 = getelementptr inbounds nuw i8, ptr %2424, i64 1744
  %2530 = load <2 x double>, ptr %2529, align 16, !tbaa !25, !noalias !96
  %2531 = fadd <2 x double> %2522, %2530
  %2532 = getelementptr inbounds nuw i8, ptr %2424, i64 1840
  %2533 = load <2 x i64>, ptr %2532, align 16, !tbaa !25, !noalias !96
  %2534 = getelementptr inbounds nuw i8, ptr %2424, i64 2048
  %2535 = load ptr, ptr %2534, align 16, !tbaa !75, !noalias !96
  %2536 = load <2 x double>, ptr %2535, align 16, !tbaa !25, !noalias !96
  %2537 = fmul <2 x double> %2522, %2536
  %2538 = icmp eq <2 x i64> %2533, zeroinitializer
  %2539 = select <2 x i1> %2538, <2 x double> %2528, <2 x double> %2537
  %2540 = getelementptr inbounds nuw i8, ptr %2424, i64 2056
  %2541 = load ptr, ptr %2540, align 8, !tbaa !76, !noalias !96
  %2542 = load <2 x double>, ptr %2541, align 16, !tbaa !25, !noalias !96
  %2543 = fsub <2 x double> splat (double 1.000000e+00), %2542
  %2544 = fmul <2 x double> %2522, %2543
  %2545 = select <2 x i1> %2538, <2 x double> %2531, <2 x double> %2544
  %2546 = fneg <2 x double> %2545
  %2547 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2546, <2 x double> %1925, <2 x double> %2539)
  %2548 = fcmp olt <2 x double> %2519, %2461
  %2549 = and <2 x i1> %2431, %2548
  %2550 = fcmp ogt <2 x double> %2520, zeroinitializer
  %2551 = fcmp oge <2 x double> %2547, zeroinitializer
  %2552 = and <2 x i1> %2550, %2551
  %2553 = and <2 x i1> %2549, %2552
  %2554 = sext <2 x i1> %2553 to <2 x i64>
  %2555 = xor <2 x i64> %2554, splat (i64 -1)
  %2556 = fadd <2 x double> %2520, %2547
  %2557 = fcmp ogt <2 x double> %2556, zeroinitializer
  %2558 = and <2 x i1> %2549, %2557
  %2559 = select <2 x i1> %2558, <2 x i64> %2555, <2 x i64> zeroinitializer
  %2560 = or <2 x i64> %2559, %2554
  %2561 = fmul <2 x double> %2419, %2547
  %2562 = select <2 x i1> %2553, <2 x double> %2561, <2 x double> zeroinitializer
  %2563 = icmp eq <2 x i64> %2560, zeroinitializer
  %2564 = select <2 x i1> %2563, <2 x double> %2456, <2 x double> %2562
  %2565 = select <2 x i1> %2563, <2 x double> %2457, <2 x double> %1925
  %2566 = getelementptr inbounds nuw i8, ptr %2424, i64 1408
  store <2 x double> %2564, ptr %2566, align 16, !tbaa !25, !noalias !96
  %2567 = getelementptr inbounds nuw i8, ptr %2424, i64 1392
  store <2 x double> %2565, ptr %2567, align 16, !tbaa !25, !noalias !96
  %2568 = fmul <2 x double> %2419, %2520
  %2569 = fmul <2 x double> %2419, %2556
  %2570 = icmp eq <2 x i64> %2559, zeroinitializer
  %2571 = select <2 x i1> %2570, <2 x double> zeroinitializer, <2 x double> %2569
  %2572 = select <2 x i1> %2553, <2 x double> %2568, <2 x double> %2571
  %2573 = getelementptr inbounds nuw i8, ptr %2424, i64 1424
  store <2 x double> %2572, ptr %2573, align 16, !tbaa !25, !noalias !96
  %2574 = load i64, ptr %131, align 8, !tbaa !20, !noalias !96
  %2575 = sitofp i64 %2574 to double
  %2576 = insertelement <2 x double> poison, double %2575, i64 0
  %2577 = shufflevector <2 x double> %2576, <2 x double> poison, <2 x i32> zeroinitializer
  %2578 = select <2 x i1> %2563, <2 x double> %2577, <2 x double> %2519
  %2579 = getelementptr inbounds nuw i8, ptr %2424, i64 1440
  store <2 x double> %2578, ptr %2579, align 16, !tbaa !25, !noalias !96
  %2580 = add nuw nsw i64 %2422, 1
  %2581 = load i64, ptr %140, align 16, !tbaa !16, !noalias !96
  %2582 = icmp slt i64 %2580, %2581
  br i1 %2582, label %2421, label %2583, !llvm.loop !88

2583:                                             ; preds = %2518, %2376
  %2584 = phi i64 [ %2412, %2376 ], [ %2581, %2518 ]
  %2585 = icmp sgt i64 %2584, 0
  br i1 %2585, label %2751, label %2586

2586:                                             ; preds = %2583, %2413
  %2587 = phi i64 [ %2584, %2583 ], [ %2414, %2413 ]
  %2588 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %2589 = load <2 x double>, ptr %202, align 16, !tbaa !25
  br label %2665

2590:                                             ; preds = %2824
  %2591 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %2592 = load <2 x double>, ptr %202, align 16, !tbaa !25
  %2593 = icmp sgt i64 %2848, 0
  br i1 %2593, label %2594, label %2665

2594:                                             ; preds = %2590
  %2595 = load ptr, ptr %141, align 8, !tbaa !27
  %2596 = and i64 %2848, 1
  %2597 = icmp eq i64 %2848, 1
  br i1 %2597, label %2641, label %2598

2598:                                             ; preds = %2594
  %2599 = and i64 %2848, 9223372036854775806
  br label %2600

2600:                                             ; preds = %2600, %2598
  %2601 = phi <2 x double> [ zeroinitializer, %2598 ], [ %2632, %2600 ]
  %2602 = phi <2 x double> [ %2592, %2598 ], [ %2637, %2600 ]
  %2603 = phi i64 [ 0, %2598 ], [ %2638, %2600 ]
  %2604 = phi i64 [ 0, %2598 ], [ %2639, %2600 ]
  %2605 = getelementptr inbounds nuw %struct.Piece, ptr %2595, i64 %2603
  %2606 = getelementptr inbounds nuw i8, ptr %2605, i64 1872
  %2607 = load <2 x i64>, ptr %2606, align 16, !tbaa !25
  %2608 = getelementptr inbounds nuw i8, ptr %2605, i64 32
  %2609 = load <2 x double>, ptr %2608, align 16, !tbaa !25
  %2610 = getelementptr inbounds nuw i8, ptr %2605, i64 1584
  %2611 = load <2 x double>, ptr %2610, align 16, !tbaa !25
  %2612 = fmul <2 x double> %2609, %2611
  %2613 = icmp eq <2 x i64> %2607, zeroinitializer
  %2614 = select <2 x i1> %2613, <2 x double> %2612, <2 x double> zeroinitializer
  %2615 = fadd <2 x double> %2601, %2614
  %2616 = getelementptr inbounds nuw i8, ptr %2605, i64 1552
  %2617 = load <2 x double>, ptr %2616, align 16, !tbaa !25
  %2618 = fmul <2 x double> %2609, %2617
  %2619 = select <2 x i1> %2613, <2 x double> %2618, <2 x double> zeroinitializer
  %2620 = fadd <2 x double> %2602, %2619
  %2621 = or disjoint i64 %2603, 1
  %2622 = getelementptr inbounds nuw %struct.Piece, ptr %2595, i64 %2621
  %2623 = getelementptr inbounds nuw i8, ptr %2622, i64 1872
  %2624 = load <2 x i64>, ptr %2623, align 16, !tbaa !25
  %2625 = getelementptr inbounds nuw i8, ptr %2622, i64 32
  %2626 = load <2 x double>, ptr %2625, align 16, !tbaa !25
  %2627 = getelementptr inbounds nuw i8, ptr %2622, i64 1584
  %2628 = load <2 x double>, ptr %2627, align 16, !tbaa !25
  %2629 = fmul <2 x double> %2626, %2628
  %2630 = icmp eq <2 x i64> %2624, zeroinitializer
  %2631 = select <2 x i1> %2630, <2 x double> %2629, <2 x double> zeroinitializer
  %2632 = fadd <2 x double> %2615, %2631
  %2633 = getelementptr inbounds nuw i8, ptr %2622, i64 1552
  %2634 = load <2 x double>, ptr %2633, align 16, !tbaa !25
  %2635 = fmul <2 x double> %2626, %2634
  %2636 = select <2 x i1> %2630, <2 x double> %2635, <2 x double> zeroinitializer
  %2637 = fadd <2 x double> %2620, %2636
  %2638 = add nuw nsw i64 %2603, 2
  %2639 = add i64 %2604, 2
  %2640 = icmp eq i64 %2639, %2599
  br i1 %2640, label %2641, label %2600, !llvm.loop !102

2641:                                             ; preds = %2600, %2594
  %2642 = phi <2 x double> [ poison, %2594 ], [ %2632, %2600 ]
  %2643 = phi <2 x double> [ poison, %2594 ], [ %2637, %2600 ]
  %2644 = phi <2 x double> [ zeroinitializer, %2594 ], [ %2632, %2600 ]
  %2645 = phi <2 x double> [ %2592, %2594 ], [ %2637, %2600 ]
  %2646 = phi i64 [ 0, %2594 ], [ %2638, %2600 ]
  %2647 = icmp eq i64 %2596, 0
  br i1 %2647, label %2665, label %2648

2648:                                             ; preds = %2641
  %2649 = getelementptr inbounds nuw %struct.Piece, ptr %2595, i64 %2646
  %2650 = getelementptr inbounds nuw i8, ptr %2649, i64 1872
  %2651 = load <2 x i64>, ptr %2650, align 16, !tbaa !25
  %2652 = getelementptr inbounds nuw i8, ptr %2649, i64 32
  %2653 = load <2 x double>, ptr %2652, align 16, !tbaa !25
  %2654 = getelementptr inbounds nuw i8, ptr %2649, i64 1584
  %2655 = load <2 x double>, ptr %2654, align 16, !tbaa !25
  %2656 = fmul <2 x double> %2653, %2655
  %2657 = icmp eq <2 x i64> %2651, zeroinitializer
  %2658 = select <2 x i1> %2657, <2 x double> %2656, <2 x double> zeroinitializer
  %2659 = fadd <2 x double> %2644, %2658
  %2660 = getelementptr inbounds nuw i8, ptr %2649, i64 1552
  %2661 = load <2 x double>, ptr %2660, align 16, !tbaa !25
  %2662 = fmul <2 x double> %2653, %2661
  %2663 = select <2 x i1> %2657, <2 x double> %2662, <2 x double> zeroinitializer
  %2664 = fadd <2 x double> %2645, %2663
  br label %2665

2665:                                             ; preds = %2648, %2641, %2586, %2590
  %2666 = phi i1 [ false, %2590 ], [ false, %2586 ], [ true, %2641 ], [ true, %2648 ]
  %2667 = phi <2 x double> [ %2592, %2590 ], [ %2589, %2586 ], [ %2592, %2641 ], [ %2592, %2648 ]
  %2668 = phi <2 x double> [ %2591, %2590 ], [ %2588, %2586 ], [ %2591, %2641 ], [ %2591, %2648 ]
  %2669 = phi i64 [ %2848, %2590 ], [ %2587, %2586 ], [ %2848, %2641 ], [ %2848, %2648 ]
  %2670 = phi <2 x double> [ %2592, %2590 ], [ %2589, %2586 ], [ %2643, %2641 ], [ %2664, %2648 ]
  %2671 = phi <2 x double> [ zeroinitializer, %2590 ], [ zeroinitializer, %2586 ], [ %2642, %2641 ], [ %2659, %2648 ]
  %2672 = load <2 x double>, ptr %185, align 16, !tbaa !25
  %2673 = fsub <2 x double> %2668, %2672
  %2674 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2667, <2 x double> %2673, <2 x double> %2671)
  store <2 x double> %2674, ptr %167, align 16, !tbaa !25
  %2675 = load <2 x double>, ptr %171, align 16, !tbaa !25
  %2676 = fcmp ule <2 x double> %2675, zeroinitializer
  %2677 = load <2 x double>, ptr %203, align 16, !tbaa !25
  %2678 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2675, <2 x double> splat (double 5.000000e-01), <2 x double> %2677)
  %2679 = fsub <2 x double> %2678, %2668
  %2680 = fcmp ogt <2 x double> %2675, splat (double 1.000000e-30)
  %2681 = select <2 x i1> %2680, <2 x double> %2675, <2 x double> splat (double 1.000000e-30)
  %2682 = fdiv <2 x double> %2679, %2681
  %2683 = fcmp ogt <2 x double> %2682, zeroinitializer
  %2684 = select <2 x i1> %2683, <2 x double> %2682, <2 x double> zeroinitializer
  %2685 = fcmp olt <2 x double> %2684, splat (double 1.000000e+00)
  %2686 = select <2 x i1> %2685, <2 x double> %2684, <2 x double> splat (double 1.000000e+00)
  %2687 = load <2 x double>, ptr %166, align 16, !tbaa !25
  %2688 = load <2 x i64>, ptr %165, align 16, !tbaa !25
  %2689 = icmp eq <2 x i64> %2688, zeroinitializer
  %2690 = select <2 x i1> %2689, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %2691 = select <2 x i1> %2676, <2 x double> %2690, <2 x double> %2686
  %2692 = fmul <2 x double> %2687, %2691
  %2693 = fcmp ule <2 x double> %2692, zeroinitializer
  %2694 = fcmp uge <2 x double> %2692, %2687
  %2695 = or <2 x i1> %2693, %2694
  %2696 = or <2 x i1> %2676, %2695
  %2697 = fdiv <2 x double> %2687, %2681
  %2698 = select <2 x i1> %2696, <2 x double> zeroinitializer, <2 x double> %2697
  %2699 = fadd <2 x double> %2670, %2698
  %2700 = load <2 x double>, ptr %159, align 16, !tbaa !25
  %2701 = load <2 x double>, ptr %1, align 16, !tbaa !25
  %2702 = fmul <2 x double> %2668, %2701
  %2703 = load <2 x double>, ptr %168, align 16, !tbaa !25
  %2704 = load <2 x double>, ptr %169, align 16, !tbaa !25
  %2705 = fmul <2 x double> %2704, splat (double 5.000000e-01)
  %2706 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2705, <2 x double> %2668, <2 x double> %2703)
  %2707 = load <2 x double>, ptr %170, align 16, !tbaa !25
  %2708 = fmul <2 x double> %2668, %2707
  %2709 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2702, <2 x double> %2706, <2 x double> %2708)
  %2710 = load <2 x double>, ptr %160, align 16, !tbaa !25
  %2711 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %2712 = fmul <2 x double> %2701, %2711
  %2713 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2705, <2 x double> %2711, <2 x double> %2703)
  %2714 = fmul <2 x double> %2707, %2711
  %2715 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2712, <2 x double> %2713, <2 x double> %2714)
  %2716 = fmul <2 x double> %2710, %2715
  %2717 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2700, <2 x double> %2709, <2 x double> %2716)
  %2718 = load <2 x double>, ptr %161, align 16, !tbaa !25
  %2719 = load <2 x double>, ptr %164, align 16, !tbaa !25
  %2720 = fmul <2 x double> %2701, %2719
  %2721 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2705, <2 x double> %2719, <2 x double> %2703)
  %2722 = fmul <2 x double> %2707, %2719
  %2723 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2720, <2 x double> %2721, <2 x double> %2722)
  %2724 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2718, <2 x double> %2723, <2 x double> %2717)
  %2725 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2704, <2 x double> %2668, <2 x double> %2703)
  %2726 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2701, <2 x double> %2725, <2 x double> %2707)
  %2727 = load <2 x double>, ptr %172, align 16, !tbaa !25
  %2728 = fcmp une <2 x double> %2727, zeroinitializer
  %2729 = fadd <2 x double> %2674, %2724
  %2730 = fsub <2 x double> %2729, %2692
  %2731 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2700, <2 x double> %2726, <2 x double> %2699)
  %2732 = fdiv <2 x double> %2730, %2731
  %2733 = fsub <2 x double> %2668, %2732
  %2734 = select <2 x i1> %2728, <2 x double> %2668, <2 x double> %2733
  store <2 x double> %2734, ptr %162, align 16, !tbaa !25
  %2735 = load <2 x double>, ptr %204, align 16, !tbaa !25
  %2736 = fneg <2 x double> %2710
  %2737 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2736, <2 x double> %2735, <2 x double> %2692)
  %2738 = load <2 x double>, ptr %205, align 16, !tbaa !25
  %2739 = fneg <2 x double> %2718
  %2740 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2739, <2 x double> %2738, <2 x double> %2737)
  %2741 = fdiv <2 x double> %2740, %2700
  %2742 = load <2 x double>, ptr %206, align 16, !tbaa !25
  %2743 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2736, <2 x double> %2742, <2 x double> %2674)
  %2744 = load <2 x double>, ptr %207, align 16, !tbaa !25
  %2745 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2739, <2 x double> %2744, <2 x double> %2743)
  %2746 = fdiv <2 x double> %2745, %2700
  %2747 = load <2 x double>, ptr %208, align 16, !tbaa !25
  %2748 = select <2 x i1> %2728, <2 x double> %2747, <2 x double> %2741
  store <2 x double> %2748, ptr %208, align 16, !tbaa !25
  %2749 = load <2 x double>, ptr %209, align 16, !tbaa !25
  %2750 = select <2 x i1> %2728, <2 x double> %2749, <2 x double> %2746
  store <2 x double> %2750, ptr %209, align 16, !tbaa !25
  br i1 %2666, label %2850, label %3150

2751:                                             ; preds = %2583, %2824
  %2752 = phi i64 [ %2847, %2824 ], [ 0, %2583 ]
  %2753 = load ptr, ptr %141, align 8, !tbaa !27
  %2754 = getelementptr inbounds nuw %struct.Piece, ptr %2753, i64 %2752
  %2755 = getelementptr inbounds nuw i8, ptr %2754, i64 1392
  %2756 = load <2 x double>, ptr %2755, align 16, !tbaa !25
  %2757 = load i64, ptr %131, align 8, !tbaa !20
  %2758 = icmp sgt i64 %2757, 0
  br i1 %2758, label %2759, label %2764

2759:                                             ; preds = %2751
  %2760 = getelementptr inbounds nuw i8, ptr %2754, i64 1440
  %2761 = getelementptr inbounds nuw i8, ptr %2754, i64 1944
  %2762 = getelementptr inbounds nuw i8, ptr %2754, i64 1952
  %2763 = getelementptr inbounds nuw i8, ptr %2754, i64 1896
  br label %2779

2764:                                             ; preds = %2779, %2751
  %2765 = getelementptr inbounds nuw i8, ptr %2754, i64 1840
  %2766 = load <2 x i64>, ptr %2765, align 16, !tbaa !25
  %2767 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2766)
  %2768 = icmp eq i64 %2767, 0
  %2769 = load i64, ptr %132, align 16, !tbaa !21
  %2770 = icmp sgt i64 %2769, 0
  br i1 %2768, label %2776, label %2771

2771:                                             ; preds = %2764
  br i1 %2770, label %2772, label %2824

2772:                                             ; preds = %2771
  %2773 = getelementptr inbounds nuw i8, ptr %2754, i64 2048
  %2774 = getelementptr inbounds nuw i8, ptr %2754, i64 2056
  %2775 = getelementptr inbounds nuw i8, ptr %2754, i64 2016
  br label %2799

2776:                                             ; preds = %2764
  br i1 %2770, label %2777, label %2824

2777:                                             ; preds = %2776
  %2778 = getelementptr inbounds nuw i8, ptr %2754, i64 2016
  br label %2817

2779:                                             ; preds = %2759, %2779
  %2780 = phi <2 x double> [ %2756, %2759 ], [ %2795, %2779 ]
  %2781 = phi i64 [ %2757, %2759 ], [ %2782, %2779 ]
  %2782 = add nsw i64 %2781, -1
  %2783 = load <2 x double>, ptr %2760, align 16, !tbaa !25
  %2784 = uitofp nneg i64 %2782 to double
  %2785 = insertelement <2 x double> poison, double %2784, i64 0
  %2786 = shufflevector <2 x double> %2785, <2 x double> poison, <2 x i32> zeroinitializer
  %2787 = fcmp ugt <2 x double> %2783, %2786
  %2788 = load ptr, ptr %2761, align 8, !tbaa !70
  %2789 = getelementptr inbounds nuw <2 x double>, ptr %2788, i64 %2782
  %2790 = load <2 x double>, ptr %2789, align 16, !tbaa !25
  %2791 = load ptr, ptr %2762, align 16, !tbaa !71
  %2792 = getelementptr inbounds nuw <2 x double>, ptr %2791, i64 %2782
  %2793 = load <2 x double>, ptr %2792, align 16, !tbaa !25
  %2794 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2793, <2 x double> %2780, <2 x double> %2790)
  %2795 = select <2 x i1> %2787, <2 x double> %2794, <2 x double> %2756
  %2796 = load ptr, ptr %2763, align 8, !tbaa !56
  %2797 = getelementptr inbounds nuw <2 x double>, ptr %2796, i64 %2782
  store <2 x double> %2795, ptr %2797, align 16, !tbaa !25
  %2798 = icmp samesign ugt i64 %2781, 1
  br i1 %2798, label %2779, label %2764, !llvm.loop !103

2799:                                             ; preds = %2772, %2799
  %2800 = phi i64 [ 0, %2772 ], [ %2814, %2799 ]
  %2801 = phi <2 x double> [ %2756, %2772 ], [ %2811, %2799 ]
  %2802 = load <2 x i64>, ptr %2765, align 16, !tbaa !25
  %2803 = load ptr, ptr %2773, align 16, !tbaa !75
  %2804 = getelementptr inbounds nuw <2 x double>, ptr %2803, i64 %2800
  %2805 = load <2 x double>, ptr %2804, align 16, !tbaa !25
  %2806 = load ptr, ptr %2774, align 8, !tbaa !76
  %2807 = getelementptr inbounds nuw <2 x double>, ptr %2806, i64 %2800
  %2808 = load <2 x double>, ptr %2807, align 16, !tbaa !25
  %2809 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2808, <2 x double> %2801, <2 x double> %2805)
  %2810 = icmp eq <2 x i64> %2802, zeroinitializer
  %2811 = select <2 x i1> %2810, <2 x double> %2756, <2 x double> %2809
  %2812 = load ptr, ptr %2775, align 16, !tbaa !104
  %2813 = getelementptr inbounds nuw <2 x double>, ptr %2812, i64 %2800
  store <2 x double> %2811, ptr %2813, align 16, !tbaa !25
  %2814 = add nuw nsw i64 %2800, 1
  %2815 = load i64, ptr %132, align 16, !tbaa !21
  %2816 = icmp slt i64 %2814, %2815
  br i1 %2816, label %2799, label %2824, !llvm.loop !105

2817:                                             ; preds = %2777, %2817
  %2818 = phi i64 [ 0, %2777 ], [ %2821, %2817 ]
  %2819 = load ptr, ptr %2778, align 16, !tbaa !104
  %2820 = getelementptr inbounds nuw <2 x double>, ptr %2819, i64 %2818
  store <2 x double> %2756, ptr %2820, align 16, !tbaa !25
  %2821 = add nuw nsw i64 %2818, 1
  %2822 = load i64, ptr %132, align 16, !tbaa !21
  %2823 = icmp slt i64 %2821, %2822
  br i1 %2823, label %2817, label %2824, !llvm.loop !106

2824:                                             ; preds = %2799, %2817, %2771, %2776
  %2825 = phi <2 x double> [ %2756, %2776 ], [ %2756, %2771 ], [ %2756, %2817 ], [ %2811, %2799 ]
  %2826 = load <2 x i64>, ptr %2765, align 16, !tbaa !25
  %2827 = getelementptr inbounds nuw i8, ptr %2754, i64 1568
  %2828 = load <2 x double>, ptr %2827, align 16, !tbaa !25
  %2829 = icmp eq <2 x i64> %2826, zeroinitializer
  %2830 = select <2 x i1> %2829, <2 x double> zeroinitializer, <2 x double> %2828
  %2831 = fsub <2 x double> splat (double 1.000000e+00), %2830
  %2832 = getelementptr inbounds nuw i8, ptr %2754, i64 1376
  %2833 = load <2 x double>, ptr %2832, align 16, !tbaa !25
  %2834 = fmul <2 x double> %2830, %2833
  %2835 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2831, <2 x double> %2825, <2 x double> %2834)
  %2836 = getelementptr inbounds nuw i8, ptr %2754, i64 1616
  store <2 x double> %2835, ptr %2836, align 16, !tbaa !25
  %2837 = getelementptr inbounds nuw i8, ptr %2754, i64 1552
  %2838 = load <2 x double>, ptr %2837, align 16, !tbaa !25
  %2839 = fsub <2 x double> %2833, %2825
  %2840 = fmul <2 x double> %2839, %2838
  %2841 = getelementptr inbounds nuw i8, ptr %2754, i64 1584
  store <2 x double> %2840, ptr %2841, align 16, !tbaa !25
  %2842 = getelementptr inbounds nuw i8, ptr %2754, i64 800
  %2843 = load <2 x double>, ptr %2842, align 16, !tbaa !25
  %2844 = fdiv <2 x double> %2840, %2843
  %2845 = fsub <2 x double> %2833, %2844
  %2846 = getelementptr inbounds nuw i8, ptr %2754, i64 1600
  store <2 x double> %2845, ptr %2846, align 16, !tbaa !25
  %2847 = add nuw nsw i64 %2752, 1
  %2848 = load i64, ptr %140, align 16, !tbaa !16
  %2849 = icmp slt i64 %2847, %2848
  br i1 %2849, label %2751, label %2590, !llvm.loop !107

2850:                                             ; preds = %2665, %3105
  %2851 = phi i64 [ %3147, %3105 ], [ 0, %2665 ]
  %2852 = phi <2 x double> [ %3146, %3105 ], [ zeroinitializer, %2665 ]
  %2853 = load ptr, ptr %141, align 8, !tbaa !27
  %2854 = getelementptr inbounds nuw %struct.Piece, ptr %2853, i64 %2851
  %2855 = getelementptr inbounds nuw i8, ptr %2854, i64 1408
  %2856 = load <2 x double>, ptr %2855, align 16, !tbaa !25
  %2857 = getelementptr inbounds nuw i8, ptr %2854, i64 1424
  %2858 = load <2 x double>, ptr %2857, align 16, !tbaa !25
  %2859 = fadd <2 x double> %2856, %2858
  %2860 = getelementptr inbounds nuw i8, ptr %2854, i64 1392
  %2861 = load <2 x double>, ptr %2860, align 16, !tbaa !25
  %2862 = load <2 x double>, ptr %201, align 16, !tbaa !25
  %2863 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2862, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2864 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2862, <2 x double> %2863, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2865 = getelementptr inbounds nuw i8, ptr %2854, i64 1328
  %2866 = load <2 x double>, ptr %2865, align 16, !tbaa !25
  %2867 = getelementptr inbounds nuw i8, ptr %2854, i64 1008
  %2868 = load <2 x double>, ptr %2867, align 16, !tbaa !25
  %2869 = fneg <2 x double> %2866
  %2870 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2869, <2 x double> %2868, <2 x double> %2859)
  %2871 = getelementptr inbounds nuw i8, ptr %2854, i64 1344
  %2872 = load <2 x double>, ptr %2871, align 16, !tbaa !25
  %2873 = getelementptr inbounds nuw i8, ptr %2854, i64 1200
  %2874 = load <2 x double>, ptr %2873, align 16, !tbaa !25
  %2875 = fneg <2 x double> %2872
  %2876 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2875, <2 x double> %2874, <2 x double> %2870)
  %2877 = getelementptr inbounds nuw i8, ptr %2854, i64 1312
  %2878 = load <2 x double>, ptr %2877, align 16, !tbaa !25
  %2879 = fdiv <2 x double> %2876, %2878
  %2880 = getelementptr inbounds nuw i8, ptr %2854, i64 400
  %2881 = load <2 x double>, ptr %2880, align 16, !tbaa !25
  %2882 = fsub <2 x double> %2881, %2879
  %2883 = getelementptr inbounds nuw i8, ptr %2854, i64 976
  %2884 = load <2 x double>, ptr %2883, align 16, !tbaa !25
  %2885 = getelementptr inbounds nuw i8, ptr %2854, i64 1792
  %2886 = load <2 x double>, ptr %2885, align 16, !tbaa !25
  %2887 = fsub <2 x double> %2884, %2886
  %2888 = getelementptr inbounds nuw i8, ptr %2854, i64 1696
  %2889 = load <2 x double>, ptr %2888, align 16, !tbaa !25
  %2890 = getelementptr inbounds nuw i8, ptr %2854, i64 320
  %2891 = load <2 x double>, ptr %2890, align 16, !tbaa !25
  %2892 = fmul <2 x double> %2889, %2891
  %2893 = getelementptr inbounds nuw i8, ptr %2854, i64 1616
  %2894 = load <2 x double>, ptr %2893, align 16, !tbaa !25
  %2895 = fsub <2 x double> %2894, %2861
  %2896 = fmul <2 x double> %2892, %2895
  %2897 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2864, <2 x double> %2859, <2 x double> %2896)
  %2898 = fsub <2 x double> %2882, %2887
  %2899 = getelementptr inbounds nuw i8, ptr %2854, i64 736
  %2900 = getelementptr inbounds nuw i8, ptr %2854, i64 768
  %2901 = load <2 x double>, ptr %2900, align 16, !tbaa !25
  %2902 = fsub <2 x double> %2898, %2901
  %2903 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2902)
  %2904 = getelementptr inbounds nuw i8, ptr %2854, i64 208
  %2905 = load <2 x double>, ptr %2904, align 16, !tbaa !25
  %2906 = fdiv <2 x double> %2903, %2905
  %2907 = getelementptr inbounds nuw i8, ptr %2854, i64 1840
  %2908 = load <2 x i64>, ptr %2907, align 16, !tbaa !25
  %2909 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2908)
  %2910 = icmp eq i64 %2909, 0
  br i1 %2910, label %3105, label %2911

2911:                                             ; preds = %2850
  %2912 = getelementptr inbounds nuw i8, ptr %2854, i64 944
  %2913 = load <2 x double>, ptr %2912, align 16, !tbaa !25
  %2914 = fcmp ogt <2 x double> %2887, %2882
  %2915 = getelementptr inbounds nuw i8, ptr %2854, i64 1824
  %2916 = load <2 x double>, ptr %2915, align 16, !tbaa !25
  %2917 = fcmp oeq <2 x double> %2916, zeroinitializer
  %2918 = select <2 x i1> %2917, <2 x i1> %2914, <2 x i1> zeroinitializer
  %2919 = select <2 x i1> %2918, <2 x i64> %2908, <2 x i64> zeroinitializer
  %2920 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2919)
  %2921 = icmp eq i64 %2920, 0
  br i1 %2921, label %2992, label %2922

2922:                                             ; preds = %2911
  %2923 = fsub <2 x double> %2887, %2882
  %2924 = fdiv <2 x double> %2923, %2905
  %2925 = getelementptr inbounds nuw i8, ptr %2854, i64 1928
  %2926 = load ptr, ptr %2925, align 8, !tbaa !59
  %2927 = load i64, ptr %131, align 8, !tbaa !20
  %2928 = add nsw i64 %2927, -1
  %2929 = getelementptr inbounds <2 x double>, ptr %2926, i64 %2928
  %2930 = load <2 x double>, ptr %2929, align 16, !tbaa !25
  %2931 = icmp sgt i64 %2927, 1
  br i1 %2931, label %2932, label %2984

2932:                                             ; preds = %2922
  %2933 = getelementptr inbounds nuw i8, ptr %2854, i64 1888
  %2934 = load i64, ptr %2933, align 16, !tbaa !30
  %2935 = getelementptr inbounds nuw i8, ptr %2854, i64 1104
  %2936 = getelementptr inbounds nuw i8, ptr %2854, i64 384
  %2937 = getelementptr inbounds nuw i8, ptr %2854, i64 1984
  br label %2938

2938:                                             ; preds = %2932, %2981
  %2939 = phi <2 x double> [ %2913, %2932 ], [ %2976, %2981 ]
  %2940 = phi i64 [ %2928, %2932 ], [ %2982, %2981 ]
  %2941 = phi <2 x double> [ %2930, %2932 ], [ %2964, %2981 ]
  %2942 = phi <2 x i64> [ %2919, %2932 ], [ %2968, %2981 ]
  %2943 = phi <2 x double> [ %2924, %2932 ], [ %2975, %2981 ]
  %2944 = icmp slt i64 %2940, %2934
  br i1 %2944, label %2945, label %2951

2945:                                             ; preds = %2938
  %2946 = load ptr, ptr %2937, align 16, !tbaa !66
  %2947 = getelementptr inbounds nuw <2 x double>, ptr %2946, i64 %2940
  %2948 = load <2 x double>, ptr %2947, align 16, !tbaa !25
  %2949 = load <2 x double>, ptr %2936, align 16, !tbaa !25
  %2950 = fmul <2 x double> %2948, %2949
  br label %2959

2951:                                             ; preds = %2938
  %2952 = load <2 x double>, ptr %2935, align 16, !tbaa !25
  %2953 = load <2 x double>, ptr %2936, align 16, !tbaa !25
  %2954 = load ptr, ptr %2937, align 16, !tbaa !66
  %2955 = getelementptr inbounds nuw <2 x double>, ptr %2954, i64 %2940
  %2956 = load <2 x double>, ptr %2955, align 16, !tbaa !25
  %2957 = fsub <2 x double> %2952, %2953
  %2958 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2956, <2 x double> %2957, <2 x double> %2953)
  br label %2959

2959:                                             ; preds = %2945, %2951
  %2960 = phi <2 x double> [ %2950, %2945 ], [ %2958, %2951 ]
  %2961 = getelementptr inbounds nuw <2 x double>, ptr %2926, i64 %2940
  %2962 = load <2 x double>, ptr %2961, align 16, !tbaa !25
  %2963 = icmp eq <2 x i64> %2942, zeroinitializer
  %2964 = select <2 x i1> %2963, <2 x double> %2941, <2 x double> %2962
  %2965 = fsub <2 x double> %2939, %2960
  %2966 = fmul <2 x double> %2965, %2964
  %2967 = fcmp olt <2 x double> %2966, %2943
  %2968 = select <2 x i1> %2967, <2 x i64> %2942, <2 x i64> zeroinitializer
  %2969 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2968)
  %2970 = icmp eq i64 %2969, 0
  br i1 %2970, label %2984, label %2971

2971:                                             ; preds = %2959
  %2972 = fneg <2 x double> %2964
  %2973 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2972, <2 x double> %2965, <2 x double> %2943)
  %2974 = icmp eq <2 x i64> %2968, zeroinitializer
  %2975 = select <2 x i1> %2974, <2 x double> %2943, <2 x double> %2973
  %2976 = select <2 x i1> %2974, <2 x double> %2939, <2 x double> %2960
  %2977 = icmp eq i64 %2940, 1
  br i1 %2977, label %2978, label %2981

2978:                                             ; preds = %2971
  %2979 = load <2 x double>, ptr %2926, align 16, !tbaa !25
  %2980 = select <2 x i1> %2974, <2 x double> %2964, <2 x double> %2979
  br label %2984

2981:                                             ; preds = %2971
  %2982 = add nsw i64 %2940, -1
  %2983 = icmp sgt i64 %2940, 1
  br i1 %2983, label %2938, label %2984, !llvm.loop !108

2984:                                             ; preds = %2981, %2959, %2978, %2922
  %2985 = phi <2 x double> [ %2924, %2922 ], [ %2975, %2978 ], [ %2943, %2959 ], [ %2975, %2981 ]
  %2986 = phi <2 x double> [ %2913, %2922 ], [ %2976, %2978 ], [ %2939, %2959 ], [ %2976, %2981 ]
  %2987 = phi <2 x double> [ %2930, %2922 ], [ %2980, %2978 ], [ %2964, %2959 ], [ %2964, %2981 ]
  %2988 = fdiv <2 x double> %2985, %2987
  %2989 = fsub <2 x double> %2986, %2988
  %2990 = icmp eq <2 x i64> %2919, zeroinitializer
  %2991 = select <2 x i1> %2990, <2 x double> %2913, <2 x double> %2989
  br label %2992

2992:                                             ; preds = %2984, %2911
  %2993 = phi <2 x double> [ %2991, %2984 ], [ %2913, %2911 ]
  %2994 = load <2 x double>, ptr %2899, align 16, !tbaa !25
  %2995 = getelementptr inbounds nuw i8, ptr %2854, i64 640
  %2996 = load <2 x double>, ptr %2995, align 16, !tbaa !25
  %2997 = getelementptr inbounds nuw i8, ptr %2854, i64 656
  %2998 = load <2 x double>, ptr %2997, align 16, !tbaa !25
  %2999 = getelementptr inbounds nuw i8, ptr %2854, i64 672
  %3000 = load <2 x double>, ptr %2999, align 16, !tbaa !25
  %3001 = getelementptr inbounds nuw i8, ptr %2854, i64 688
  %3002 = load <2 x double>, ptr %3001, align 16, !tbaa !25
  %3003 = load <2 x double>, ptr %2854, align 16, !tbaa !25
  %3004 = fmul <2 x double> %3003, splat (double 1.000000e-09)
  %3005 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2994, <2 x double> %3002, <2 x double> %3000)
  %3006 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2994, <2 x double> %3005, <2 x double> %2998)
  %3007 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2994, <2 x double> %3006, <2 x double> %2996)
  %3008 = fsub <2 x double> %3007, %2993
  %3009 = fmul <2 x double> %2994, splat (double 3.000000e+00)
  %3010 = fmul <2 x double> %3009, %3002
  %3011 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3000, <2 x double> splat (double 2.000000e+00), <2 x double> %3010)
  %3012 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2994, <2 x double> %3011, <2 x double> %2998)
  %3013 = fdiv <2 x double> %3008, %3012
  %3014 = fsub <2 x double> %2994, %3013
  %3015 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3013)
  %3016 = fcmp oge <2 x double> %3015, %3004
  %3017 = bitcast <2 x i1> %3016 to i2
  %3018 = icmp eq i2 %3017, 0
  br i1 %3018, label %3065, label %3019, !llvm.loop !109

3019:                                             ; preds = %2992
  %3020 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3014, <2 x double> %3002, <2 x double> %3000)
  %3021 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3014, <2 x double> %3020, <2 x double> %2998)
  %3022 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3014, <2 x double> %3021, <2 x double> %2996)
  %3023 = fsub <2 x double> %3022, %2993
  %3024 = fmul <2 x double> %3014, splat (double 3.000000e+00)
  %3025 = fmul <2 x double> %3024, %3002
  %3026 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3000, <2 x double> splat (double 2.000000e+00), <2 x double> %3025)
  %3027 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3014, <2 x double> %3026, <2 x double> %2998)
  %3028 = fdiv <2 x double> %3023, %3027
  %3029 = fsub <2 x double> %3014, %3028
  %3030 = select <2 x i1> %3016, <2 x double> %3029, <2 x double> %3014
  %3031 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3028)
  %3032 = fcmp oge <2 x double> %3031, %3004
  %3033 = and <2 x i1> %3032, %3016
  %3034 = bitcast <2 x i1> %3033 to i2
  %3035 = icmp eq i2 %3034, 0
  br i1 %3035, label %3065, label %3036, !llvm.loop !109

3036:                                             ; preds = %3019
  %3037 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3030, <2 x double> %3002, <2 x double> %3000)
  %3038 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3030, <2 x double> %3037, <2 x double> %2998)
  %3039 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3030, <2 x double> %3038, <2 x double> %2996)
  %3040 = fsub <2 x double> %3039, %2993
  %3041 = fmul <2 x double> %3030, splat (double 3.000000e+00)
  %3042 = fmul <2 x double> %3041, %3002
  %3043 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3000, <2 x double> splat (double 2.000000e+00), <2 x double> %3042)
  %3044 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3030, <2 x double> %3043, <2 x double> %2998)
  %3045 = fdiv <2 x double> %3040, %3044
  %3046 = fsub <2 x double> %3030, %3045
  %3047 = select <2 x i1> %3033, <2 x double> %3046, <2 x double> %3030
  %3048 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3045)
  %3049 = fcmp oge <2 x double> %3048, %3004
  %3050 = and <2 x i1> %3049, %3033
  %3051 = bitcast <2 x i1> %3050 to i2
  %3052 = icmp eq i2 %3051, 0
  br i1 %3052, label %3065, label %3053, !llvm.loop !109

3053:                                             ; preds = %3036
  %3054 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3047, <2 x double> %3002, <2 x double> %3000)
  %3055 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3047, <2 x double> %3054, <2 x double> %2998)
  %3056 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3047, <2 x double> %3055, <2 x double> %2996)
  %3057 = fsub <2 x double> %3056, %2993
  %3058 = fmul <2 x double> %3047, splat (double 3.000000e+00)
  %3059 = fmul <2 x double> %3058, %3002
  %3060 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3000, <2 x double> splat (double 2.000000e+00), <2 x double> %3059)
  %3061 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3047, <2 x double> %3060, <2 x double> %2998)
  %3062 = fdiv <2 x double> %3057, %3061
  %3063 = fsub <2 x double> %3047, %3062
  %3064 = select <2 x i1> %3050, <2 x double> %3063, <2 x double> %3047
  br label %3065

3065:                                             ; preds = %3053, %3036, %3019, %2992
  %3066 = phi <2 x double> [ %3014, %2992 ], [ %3030, %3019 ], [ %3047, %3036 ], [ %3064, %3053 ]
  %3067 = fmul <2 x double> %3003, splat (double 2.800000e-01)
  %3068 = fcmp ogt <2 x double> %3066, %3067
  %3069 = select <2 x i1> %3068, <2 x double> %3066, <2 x double> %3067
  %3070 = fcmp olt <2 x double> %3069, %3003
  %3071 = select <2 x i1> %3070, <2 x double> %3069, <2 x double> %3003
  %3072 = fcmp olt <2 x double> %2887, %2882
  %3073 = icmp eq <2 x i64> %2908, zeroinitializer
  %3074 = select <2 x i1> %3073, <2 x i1> splat (i1 true), <2 x i1> %3072
  %3075 = select <2 x i1> %3074, <2 x double> %2887, <2 x double> %2882
  %3076 = fsub <2 x double> %3071, %2994
  %3077 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3076)
  %3078 = select <2 x i1> %3073, <2 x double> %2906, <2 x double> %3077
  %3079 = select <2 x i1> %3073, <2 x double> %2994, <2 x double> %3071
  store <2 x double> %3079, ptr %2899, align 16, !tbaa !25
  %3080 = getelementptr inbounds nuw i8, ptr %2854, i64 752
  %3081 = load <2 x double>, ptr %3080, align 16, !tbaa !25
  %3082 = select <2 x i1> %3073, <2 x double> %3081, <2 x double> %2993
  store <2 x double> %3082, ptr %3080, align 16, !tbaa !25
  %3083 = getelementptr inbounds nuw i8, ptr %2854, i64 1680
  %3084 = load <2 x double>, ptr %3083, align 16, !tbaa !25
  %3085 = fmul <2 x double> %3084, splat (double 2.000000e+00)
  %3086 = getelementptr inbounds nuw i8, ptr %2854, i64 96
  %3087 = load <2 x double>, ptr %3086, align 16, !tbaa !25
  %3088 = getelementptr inbounds nuw i8, ptr %2854, i64 112
  %3089 = load <2 x double>, ptr %3088, align 16, !tbaa !25
  %3090 = getelementptr inbounds nuw i8, ptr %2854, i64 128
  %3091 = load <2 x double>, ptr %3090, align 16, !tbaa !25
  %3092 = fmul <2 x double> %2861, %3091
  %3093 = fmul <2 x double> %3092, splat (double 0x3FD5555555555555)
  %3094 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3089, <2 x double> splat (double 5.000000e-01), <2 x double> %3093)
  %3095 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2861, <2 x double> %3094, <2 x double> %3087)
  %3096 = fmul <2 x double> %2861, %3095
  %3097 = getelementptr inbounds nuw i8, ptr %2854, i64 192
  %3098 = load <2 x double>, ptr %3097, align 16, !tbaa !25
  %3099 = fneg <2 x double> %3098
  %3100 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3099, <2 x double> %2861, <2 x double> %3096)
  %3101 = fmul <2 x double> %3085, %3100
  %3102 = fsub <2 x double> %2897, %3101
  %3103 = select <2 x i1> %3073, <2 x double> %2897, <2 x double> %3102
  %3104 = fsub <2 x double> %2882, %3075
  br label %3105

3105:                                             ; preds = %2850, %3065
  %3106 = phi <2 x double> [ %2898, %2850 ], [ %3104, %3065 ]
  %3107 = phi <2 x double> [ %2887, %2850 ], [ %3075, %3065 ]
  %3108 = phi <2 x double> [ %2906, %2850 ], [ %3078, %3065 ]
  %3109 = phi <2 x double> [ %2897, %2850 ], [ %3103, %3065 ]
  store <2 x double> %3106, ptr %2900, align 16, !tbaa !25
  %3110 = getelementptr inbounds nuw i8, ptr %2854, i64 784
  store <2 x double> %3107, ptr %3110, align 16, !tbaa !25
  %3111 = getelementptr inbounds nuw i8, ptr %2854, i64 816
  store <2 x double> %2879, ptr %3111, align 16, !tbaa !25
  %3112 = getelementptr inbounds nuw i8, ptr %2854, i64 864
  store <2 x double> %2856, ptr %3112, align 16, !tbaa !25
  %3113 = getelementptr inbounds nuw i8, ptr %2854, i64 880
  store <2 x double> %2861, ptr %3113, align 16, !tbaa !25
  %3114 = getelementptr inbounds nuw i8, ptr %2854, i64 1744
  %3115 = load <2 x double>, ptr %3114, align 16, !tbaa !25
  %3116 = getelementptr inbounds nuw i8, ptr %2854, i64 1760
  %3117 = load <2 x double>, ptr %3116, align 16, !tbaa !25
  %3118 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3115, <2 x double> %2861, <2 x double> %3117)
  %3119 = getelementptr inbounds nuw i8, ptr %2854, i64 1584
  %3120 = load <2 x double>, ptr %3119, align 16, !tbaa !25
  %3121 = getelementptr inbounds nuw i8, ptr %2854, i64 1024
  %3122 = load <2 x double>, ptr %3121, align 16, !tbaa !25
  %3123 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2869, <2 x double> %3122, <2 x double> %3120)
  %3124 = getelementptr inbounds nuw i8, ptr %2854, i64 1216
  %3125 = load <2 x double>, ptr %3124, align 16, !tbaa !25
  %3126 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2875, <2 x double> %3125, <2 x double> %3123)
  %3127 = fdiv <2 x double> %3126, %2878
  %3128 = getelementptr inbounds nuw i8, ptr %2854, i64 832
  store <2 x double> %3127, ptr %3128, align 16, !tbaa !25
  %3129 = getelementptr inbounds nuw i8, ptr %2854, i64 1040
  %3130 = load <2 x double>, ptr %3129, align 16, !tbaa !25
  %3131 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2869, <2 x double> %3130, <2 x double> %3109)
  %3132 = getelementptr inbounds nuw i8, ptr %2854, i64 1232
  %3133 = load <2 x double>, ptr %3132, align 16, !tbaa !25
  %3134 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2875, <2 x double> %3133, <2 x double> %3131)
  %3135 = fdiv <2 x double> %3134, %2878
  %3136 = getelementptr inbounds nuw i8, ptr %2854, i64 848
  store <2 x double> %3135, ptr %3136, align 16, !tbaa !25
  %3137 = getelementptr inbounds nuw i8, ptr %2854, i64 1088
  %3138 = load <2 x double>, ptr %3137, align 16, !tbaa !25
  %3139 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2869, <2 x double> %3138, <2 x double> %3118)
  %3140 = getelementptr inbounds nuw i8, ptr %2854, i64 1280
  %3141 = load <2 x double>, ptr %3140, align 16, !tbaa !25
  %3142 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2875, <2 x double> %3141, <2 x double> %3139)
  %3143 = fdiv <2 x double> %3142, %2878
  %3144 = getelementptr inbounds nuw i8, ptr %2854, i64 896
  store <2 x double> %3143, ptr %3144, align 16, !tbaa !25
  %3145 = fcmp ogt <2 x double> %2852, %3108
  %3146 = select <2 x i1> %3145, <2 x double> %2852, <2 x double> %3108
  %3147 = add nuw nsw i64 %2851, 1
  %3148 = load i64, ptr %140, align 16, !tbaa !16
  %3149 = icmp slt i64 %3147, %3148
  br i1 %3149, label %2850, label %3150, !llvm.loop !110

3150:                                             ; preds = %3105, %2665
  %3151 = phi i64 [ %2669, %2665 ], [ %3148, %3105 ]
  %3152 = phi <2 x double> [ zeroinitializer, %2665 ], [ %3146, %3105 ]
  %3153 = load <2 x double>, ptr %173, align 16, !tbaa !25
  %3154 = fadd <2 x double> %3153, splat (double 1.000000e+00)
  store <2 x double> %3154, ptr %173, align 16, !tbaa !25
  %3155 = load <2 x i64>, ptr %122, align 16, !tbaa !25
  %3156 = load <2 x double>, ptr %210, align 16, !tbaa !25
  %3157 = fcmp olt <2 x double> %3152, %3156
  %3158 = load i64, ptr %211, align 8, !tbaa !23
  %3159 = sitofp i64 %3158 to double
  %3160 = insertelement <2 x double> poison, double %3159, i64 0
  %3161 = shufflevector <2 x double> %3160, <2 x double> poison, <2 x i32> zeroinitializer
  %3162 = fcmp oge <2 x double> %3154, %3161
  %3163 = or <2 x i1> %3157, %3162
  %3164 = select <2 x i1> %3163, <2 x i64> %3155, <2 x i64> zeroinitializer
  store <2 x i64> %3164, ptr %145, align 16, !tbaa !25
  %3165 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3164)
  %3166 = icmp eq i64 %3165, 0
  br i1 %3166, label %526, label %3167, !llvm.loop !53

3167:                                             ; preds = %3150
  %3168 = icmp sgt i64 %3151, 0
  br i1 %3168, label %3169, label %3171

3169:                                             ; preds = %3167
  %3170 = icmp eq <2 x i64> %3164, zeroinitializer
  br label %3517

3171:                                             ; preds = %3565, %3167
  %3172 = phi i64 [ %3151, %3167 ], [ %3571, %3565 ]
  %3173 = load <2 x double>, ptr %212, align 16, !tbaa !25
  %3174 = fadd <2 x double> %3173, splat (double 1.000000e+00)
  %3175 = icmp eq <2 x i64> %3164, zeroinitializer
  %3176 = select <2 x i1> %3175, <2 x double> %3173, <2 x double> %3174
  store <2 x double> %3176, ptr %212, align 16, !tbaa !25
  %3177 = fcmp ogt <2 x double> %3176, splat (double 4.000000e+01)
  %3178 = select <2 x i1> %3177, <2 x i64> %3164, <2 x i64> zeroinitializer
  %3179 = xor <2 x i64> %3178, %3164
  %3180 = load <2 x double>, ptr %139, align 16, !tbaa !25
  %3181 = fadd <2 x double> %3180, splat (double 1.000000e+00)
  %3182 = icmp eq <2 x i64> %3178, zeroinitializer
  %3183 = select <2 x i1> %3182, <2 x double> %3180, <2 x double> %3181
  store <2 x double> %3183, ptr %139, align 16, !tbaa !25
  %3184 = load <2 x double>, ptr %201, align 16, !tbaa !25
  %3185 = load <2 x double>, ptr %213, align 16, !tbaa !25
  %3186 = fsub <2 x double> %3184, %3185
  %3187 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3186)
  %3188 = load <2 x double>, ptr %214, align 16, !tbaa !25
  %3189 = fmul <2 x double> %3188, splat (double 1.500000e+00)
  %3190 = fcmp ogt <2 x double> %3187, %3189
  %3191 = load <2 x double>, ptr %157, align 16, !tbaa !25
  %3192 = fcmp ogt <2 x double> %3191, splat (double 2.000000e-03)
  %3193 = load <2 x double>, ptr %177, align 16, !tbaa !25
  %3194 = fcmp oeq <2 x double> %3193, zeroinitializer
  %3195 = and <2 x i1> %3190, %3194
  %3196 = and <2 x i1> %3192, %3195
  %3197 = fdiv <2 x double> %3188, %3187
  %3198 = select <2 x i1> %3196, <2 x i64> %3179, <2 x i64> zeroinitializer
  %3199 = load <2 x double>, ptr %155, align 16, !tbaa !25
  %3200 = icmp eq <2 x i64> %3198, zeroinitializer
  %3201 = select <2 x i1> %3200, <2 x double> %3199, <2 x double> zeroinitializer
  store <2 x double> %3201, ptr %155, align 16, !tbaa !25
  %3202 = fcmp ogt <2 x double> %3197, splat (double 5.000000e-02)
  %3203 = select <2 x i1> %3202, <2 x double> %3197, <2 x double> splat (double 5.000000e-02)
  %3204 = fcmp olt <2 x double> %3203, splat (double 0x3FEE666666666666)
  %3205 = select <2 x i1> %3204, <2 x double> %3203, <2 x double> splat (double 0x3FEE666666666666)
  %3206 = fmul <2 x double> %3191, %3205
  %3207 = fcmp ogt <2 x double> %3206, splat (double 0x3EB0C6F7A0B5ED8D)
  %3208 = select <2 x i1> %3207, <2 x double> %3206, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3209 = load <2 x double>, ptr %151, align 16, !tbaa !25
  %3210 = select <2 x i1> %3200, <2 x double> %3209, <2 x double> %3208
  store <2 x double> %3210, ptr %151, align 16, !tbaa !25
  %3211 = load <2 x double>, ptr %136, align 16, !tbaa !25
  %3212 = fadd <2 x double> %3211, splat (double 1.000000e+00)
  %3213 = select <2 x i1> %3200, <2 x double> %3211, <2 x double> %3212
  store <2 x double> %3213, ptr %136, align 16, !tbaa !25
  %3214 = xor <2 x i64> %3198, %3179
  %3215 = icmp sgt i64 %3172, 0
  br i1 %3215, label %3216, label %3358

3216:                                             ; preds = %3171
  %3217 = load ptr, ptr %141, align 8, !tbaa !27
  %3218 = fcmp ogt <2 x double> %3191, splat (double 0x3E7AD7F29ABCAF48)
  %3219 = fmul <2 x double> %3191, splat (double 3.000000e-01)
  %3220 = fcmp ogt <2 x double> %3219, splat (double 0x3EB0C6F7A0B5ED8D)
  %3221 = select <2 x i1> %3220, <2 x double> %3219, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3222 = fcmp ogt <2 x double> %3191, splat (double 1.000000e-05)
  br label %3226

3223:                                             ; preds = %3226
  %3224 = load ptr, ptr %141, align 8, !tbaa !27
  %3225 = fcmp ogt <2 x double> %3191, splat (double 1.000000e-04)
  br label %3286

3226:                                             ; preds = %3216, %3226
  %3227 = phi <2 x double> [ %3213, %3216 ], [ %3282, %3226 ]
  %3228 = phi <2 x double> [ %3210, %3216 ], [ %3280, %3226 ]
  %3229 = phi <2 x double> [ %3201, %3216 ], [ %3272, %3226 ]
  %3230 = phi i64 [ 0, %3216 ], [ %3284, %3226 ]
  %3231 = phi <2 x i64> [ %3214, %3216 ], [ %3283, %3226 ]
  %3232 = getelementptr inbounds nuw %struct.Piece, ptr %3217, i64 %3230
  %3233 = getelementptr inbounds nuw i8, ptr %3232, i64 768
  %3234 = load <2 x double>, ptr %3233, align 16, !tbaa !25
  %3235 = getelementptr inbounds nuw i8, ptr %3232, i64 960
  %3236 = load <2 x double>, ptr %3235, align 16, !tbaa !25
  %3237 = getelementptr inbounds nuw i8, ptr %3232, i64 1840
  %3238 = load <2 x i64>, ptr %3237, align 16, !tbaa !25
  %3239 = xor <2 x i64> %3238, splat (i64 -1)
  %3240 = getelementptr inbounds nuw i8, ptr %3232, i64 224
  %3241 = load <2 x double>, ptr %3240, align 16, !tbaa !25
  %3242 = fmul <2 x double> %3241, splat (double 1.000000e-04)
  %3243 = fcmp ogt <2 x double> %3242, splat (double 0x3E7AD7F29ABCAF48)
  %3244 = fneg <2 x double> %3242
  %3245 = select <2 x i1> %3243, <2 x double> %3244, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3246 = fcmp olt <2 x double> %3234, %3245
  %3247 = select <2 x i1> %3246, <2 x i64> %3239, <2 x i64> zeroinitializer
  %3248 = fcmp ole <2 x double> %3236, zeroinitializer
  %3249 = select <2 x i1> %3248, <2 x i64> %3247, <2 x i64> zeroinitializer
  %3250 = getelementptr inbounds nuw i8, ptr %3232, i64 208
  %3251 = load <2 x double>, ptr %3250, align 16, !tbaa !25
  %3252 = fmul <2 x double> %3251, splat (double -3.000000e-07)
  %3253 = fcmp olt <2 x double> %3234, %3252
  %3254 = select <2 x i1> %3218, <2 x i1> %3253, <2 x i1> zeroinitializer
  %3255 = select <2 x i1> %3254, <2 x i64> %3249, <2 x i64> zeroinitializer
  %3256 = and <2 x i64> %3255, %3231
  %3257 = icmp eq <2 x i64> %3256, zeroinitializer
  %3258 = select <2 x i1> %3257, <2 x double> %3229, <2 x double> zeroinitializer
  %3259 = select <2 x i1> %3257, <2 x double> %3228, <2 x double> %3221
  %3260 = fadd <2 x double> %3227, splat (double 1.000000e+00)
  %3261 = select <2 x i1> %3257, <2 x double> %3227, <2 x double> %3260
  %3262 = xor <2 x i64> %3256, %3231
  %3263 = xor <2 x i64> %3249, splat (i64 -1)
  %3264 = and <2 x i64> %3247, %3263
  %3265 = select <2 x i1> %3222, <2 x i64> %3264, <2 x i64> zeroinitializer
  %3266 = fsub <2 x double> %3236, %3234
  %3267 = fdiv <2 x double> %3236, %3266
  %3268 = fcmp ogt <2 x double> %3258, %3191
  %3269 = and <2 x i64> %3262, %3265
  %3270 = icmp eq <2 x i64> %3269, zeroinitializer
  %3271 = select <2 x i1> %3270, <2 x i1> splat (i1 true), <2 x i1> %3268
  %3272 = select <2 x i1> %3271, <2 x double> %3258, <2 x double> %3191
  store <2 x double> %3272, ptr %155, align 16, !tbaa !25
  %3273 = fcmp ogt <2 x double> %3267, splat (double 5.000000e-02)
  %3274 = select <2 x i1> %3273, <2 x double> %3267, <2 x double> splat (double 5.000000e-02)
  %3275 = fcmp olt <2 x double> %3274, splat (double 0x3FEE666666666666)
  %3276 = select <2 x i1> %3275, <2 x double> %3274, <2 x double> splat (double 0x3FEE666666666666)
  %3277 = fmul <2 x double> %3191, %3276
  %3278 = fcmp ogt <2 x double> %3277, splat (double 0x3EB0C6F7A0B5ED8D)
  %3279 = select <2 x i1> %3278, <2 x double> %3277, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3280 = select <2 x i1> %3270, <2 x double> %3259, <2 x double> %3279
  store <2 x double> %3280, ptr %151, align 16, !tbaa !25
  %3281 = fadd <2 x double> %3261, splat (double 1.000000e+00)
  %3282 = select <2 x i1> %3270, <2 x double> %3261, <2 x double> %3281
  store <2 x double> %3282, ptr %136, align 16, !tbaa !25
  %3283 = xor <2 x i64> %3269, %3262
  %3284 = add nuw nsw i64 %3230, 1
  %3285 = icmp eq i64 %3284, %3172
  br i1 %3285, label %3223, label %3226, !llvm.loop !111

3286:                                             ; preds = %3223, %3286
  %3287 = phi <2 x double> [ %3282, %3223 ], [ %3354, %3286 ]
  %3288 = phi <2 x double> [ %3280, %3223 ], [ %3352, %3286 ]
  %3289 = phi <2 x double> [ %3272, %3223 ], [ %3344, %3286 ]
  %3290 = phi i64 [ 0, %3223 ], [ %3356, %3286 ]
  %3291 = phi <2 x i64> [ %3283, %3223 ], [ %3355, %3286 ]
  %3292 = getelementptr inbounds nuw %struct.Piece, ptr %3224, i64 %3290
  %3293 = getelementptr inbounds nuw i8, ptr %3292, i64 944
  %3294 = load <2 x double>, ptr %3293, align 16, !tbaa !25
  %3295 = getelementptr inbounds nuw i8, ptr %3292, i64 752
  %3296 = load <2 x double>, ptr %3295, align 16, !tbaa !25
  %3297 = getelementptr inbounds nuw i8, ptr %3292, i64 1824
  %3298 = load <2 x double>, ptr %3297, align 16, !tbaa !25
  %3299 = fcmp oeq <2 x double> %3298, zeroinitializer
  %3300 = getelementptr inbounds nuw i8, ptr %3292, i64 368
  %3301 = load <2 x double>, ptr %3300, align 16, !tbaa !25
  %3302 = fmul <2 x double> %3301, splat (double 0x3FEFF7CED916872B)
  %3303 = fcmp olt <2 x double> %3296, %3302
  %3304 = and <2 x i1> %3299, %3303
  %3305 = and <2 x i1> %3225, %3304
  %3306 = fsub <2 x double> %3294, %3301
  %3307 = fsub <2 x double> %3294, %3296
  %3308 = fdiv <2 x double> %3306, %3307
  %3309 = fcmp ogt <2 x double> %3289, %3191
  %3310 = select <2 x i1> %3305, <2 x i64> %3291, <2 x i64> zeroinitializer
  %3311 = icmp eq <2 x i64> %3310, zeroinitializer
  %3312 = select <2 x i1> %3311, <2 x i1> splat (i1 true), <2 x i1> %3309
  %3313 = select <2 x i1> %3312, <2 x double> %3289, <2 x double> %3191
  store <2 x double> %3313, ptr %155, align 16, !tbaa !25
  %3314 = fcmp ogt <2 x double> %3308, splat (double 5.000000e-02)
  %3315 = select <2 x i1> %3314, <2 x double> %3308, <2 x double> splat (double 5.000000e-02)
  %3316 = fcmp olt <2 x double> %3315, splat (double 0x3FEE666666666666)
  %3317 = select <2 x i1> %3316, <2 x double> %3315, <2 x double> splat (double 0x3FEE666666666666)
  %3318 = fmul <2 x double> %3191, %3317
  %3319 = fcmp ogt <2 x double> %3318, splat (double 0x3EB0C6F7A0B5ED8D)
  %3320 = select <2 x i1> %3319, <2 x double> %3318, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3321 = select <2 x i1> %3311, <2 x double> %3288, <2 x double> %3320
  store <2 x double> %3321, ptr %151, align 16, !tbaa !25
  %3322 = fadd <2 x double> %3287, splat (double 1.000000e+00)
  %3323 = select <2 x i1> %3311, <2 x double> %3287, <2 x double> %3322
  store <2 x double> %3323, ptr %136, align 16, !tbaa !25
  %3324 = xor <2 x i64> %3310, %3291
  %3325 = load <2 x double>, ptr %3297, align 16, !tbaa !25
  %3326 = fcmp oeq <2 x double> %3325, splat (double 1.000000e+00)
  %3327 = getelementptr inbounds nuw i8, ptr %3292, i64 816
  %3328 = load <2 x double>, ptr %3327, align 16, !tbaa !25
  %3329 = getelementptr inbounds nuw i8, ptr %3292, i64 400
  %3330 = load <2 x double>, ptr %3329, align 16, !tbaa !25
  %3331 = fmul <2 x double> %3330, splat (double 1.000100e+00)
  %3332 = fcmp ogt <2 x double> %3328, %3331
  %3333 = and <2 x i1> %3326, %3332
  %3334 = and <2 x i1> %3225, %3333
  %3335 = getelementptr inbounds nuw i8, ptr %3292, i64 1008
  %3336 = load <2 x double>, ptr %3335, align 16, !tbaa !25
  %3337 = fsub <2 x double> %3330, %3336
  %3338 = fsub <2 x double> %3328, %3336
  %3339 = fdiv <2 x double> %3337, %3338
  %3340 = fcmp ogt <2 x double> %3313, %3191
  %3341 = select <2 x i1> %3334, <2 x i64> %3324, <2 x i64> zeroinitializer
  %3342 = icmp eq <2 x i64> %3341, zeroinitializer
  %3343 = select <2 x i1> %3342, <2 x i1> splat (i1 true), <2 x i1> %3340
  %3344 = select <2 x i1> %3343, <2 x double> %3313, <2 x double> %3191
  store <2 x double> %3344, ptr %155, align 16, !tbaa !25
  %3345 = fcmp ogt <2 x double> %3339, splat (double 5.000000e-02)
  %3346 = select <2 x i1> %3345, <2 x double> %3339, <2 x double> splat (double 5.000000e-02)
  %3347 = fcmp olt <2 x double> %3346, splat (double 0x3FEE666666666666)
  %3348 = select <2 x i1> %3347, <2 x double> %3346, <2 x double> splat (double 0x3FEE666666666666)
  %3349 = fmul <2 x double> %3191, %3348
  %3350 = fcmp ogt <2 x double> %3349, splat (double 0x3EB0C6F7A0B5ED8D)
  %3351 = select <2 x i1> %3350, <2 x double> %3349, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3352 = select <2 x i1> %3342, <2 x double> %3321, <2 x double> %3351
  store <2 x double> %3352, ptr %151, align 16, !tbaa !25
  %3353 = fadd <2 x double> %3323, splat (double 1.000000e+00)
  %3354 = select <2 x i1> %3342, <2 x double> %3323, <2 x double> %3353
  store <2 x double> %3354, ptr %136, align 16, !tbaa !25
  %3355 = xor <2 x i64> %3341, %3324
  %3356 = add nuw nsw i64 %3290, 1
  %3357 = icmp eq i64 %3356, %3172
  br i1 %3357, label %3358, label %3286, !llvm.loop !112

3358:                                             ; preds = %3286, %3171
  %3359 = phi <2 x double> [ %3213, %3171 ], [ %3354, %3286 ]
  %3360 = phi <2 x double> [ %3210, %3171 ], [ %3352, %3286 ]
  %3361 = phi <2 x double> [ %3201, %3171 ], [ %3344, %3286 ]
  %3362 = phi <2 x i64> [ %3214, %3171 ], [ %3355, %3286 ]
  %3363 = load <2 x double>, ptr %215, align 16, !tbaa !25
  %3364 = fmul <2 x double> %3363, splat (double 5.000000e-01)
  %3365 = load <2 x double>, ptr %203, align 16, !tbaa !25
  %3366 = load <2 x i64>, ptr %165, align 16, !tbaa !25
  %3367 = fneg <2 x double> %3364
  %3368 = icmp eq <2 x i64> %3366, zeroinitializer
  %3369 = select <2 x i1> %3368, <2 x double> %3367, <2 x double> %3364
  %3370 = fadd <2 x double> %3365, %3369
  %3371 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %3372 = fsub <2 x double> %3371, %3370
  %3373 = load <2 x double>, ptr %162, align 16, !tbaa !25
  %3374 = fsub <2 x double> %3373, %3370
  %3375 = fneg <2 x double> %3372
  %3376 = select <2 x i1> %3368, <2 x double> %3375, <2 x double> %3372
  %3377 = fneg <2 x double> %3374
  %3378 = select <2 x i1> %3368, <2 x double> %3377, <2 x double> %3374
  %3379 = load <2 x double>, ptr %172, align 16, !tbaa !25
  %3380 = fcmp oeq <2 x double> %3379, zeroinitializer
  %3381 = load <2 x double>, ptr %171, align 16, !tbaa !25
  %3382 = fcmp oeq <2 x double> %3381, zeroinitializer
  %3383 = and <2 x i1> %3380, %3382
  %3384 = fcmp olt <2 x double> %3376, splat (double -1.000000e-03)
  %3385 = and <2 x i1> %3383, %3384
  %3386 = fcmp ogt <2 x double> %3378, splat (double 4.000000e-03)
  %3387 = and <2 x i1> %3386, %3385
  %3388 = and <2 x i1> %3192, %3387
  %3389 = fsub <2 x double> %3376, %3378
  %3390 = fdiv <2 x double> %3376, %3389
  %3391 = fcmp ogt <2 x double> %3361, %3191
  %3392 = select <2 x i1> %3388, <2 x i64> %3362, <2 x i64> zeroinitializer
  %3393 = icmp eq <2 x i64> %3392, zeroinitializer
  %3394 = select <2 x i1> %3393, <2 x i1> splat (i1 true), <2 x i1> %3391
  %3395 = select <2 x i1> %3394, <2 x double> %3361, <2 x double> %3191
  store <2 x double> %3395, ptr %155, align 16, !tbaa !25
  %3396 = fcmp ogt <2 x double> %3390, splat (double 5.000000e-02)
  %3397 = select <2 x i1> %3396, <2 x double> %3390, <2 x double> splat (double 5.000000e-02)
  %3398 = fcmp olt <2 x double> %3397, splat (double 0x3FEE666666666666)
  %3399 = select <2 x i1> %3398, <2 x double> %3397, <2 x double> splat (double 0x3FEE666666666666)
  %3400 = fmul <2 x double> %3191, %3399
  %3401 = fcmp ogt <2 x double> %3400, splat (double 0x3EB0C6F7A0B5ED8D)
  %3402 = select <2 x i1> %3401, <2 x double> %3400, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3403 = select <2 x i1> %3393, <2 x double> %3360, <2 x double> %3402
  store <2 x double> %3403, ptr %151, align 16, !tbaa !25
  %3404 = fadd <2 x double> %3359, splat (double 1.000000e+00)
  %3405 = select <2 x i1> %3393, <2 x double> %3359, <2 x double> %3404
  store <2 x double> %3405, ptr %136, align 16, !tbaa !25
  %3406 = xor <2 x i64> %3392, %3362
  %3407 = load <2 x double>, ptr %216, align 16, !tbaa !25
  %3408 = load <2 x double>, ptr %189, align 16, !tbaa !25
  %3409 = load <2 x double>, ptr %180, align 16, !tbaa !25
  %3410 = fsub <2 x double> %3408, %3409
  %3411 = load <2 x double>, ptr %217, align 16, !tbaa !25
  %3412 = fcmp une <2 x double> %3411, splat (double 1.000000e+00)
  %3413 = load <2 x double>, ptr %218, align 16, !tbaa !25
  %3414 = fsub <2 x double> %3371, %3413
  %3415 = select <2 x i1> %3412, <2 x double> splat (double -1.000000e+00), <2 x double> %3414
  %3416 = fcmp une <2 x double> %3411, splat (double 2.000000e+00)
  %3417 = fsub <2 x double> %3407, %3413
  %3418 = select <2 x i1> %3416, <2 x double> %3415, <2 x double> %3417
  %3419 = fcmp une <2 x double> %3411, splat (double 3.000000e+00)
  %3420 = fsub <2 x double> %3410, %3413
  %3421 = select <2 x i1> %3419, <2 x double> %3418, <2 x double> %3420
  %3422 = fcmp une <2 x double> %3411, splat (double 4.000000e+00)
  %3423 = fsub <2 x double> %3413, %3410
  %3424 = select <2 x i1> %3422, <2 x double> %3421, <2 x double> %3423
  br i1 %3215, label %3425, label %3473

3425:                                             ; preds = %3358
  %3426 = load ptr, ptr %141, align 8, !tbaa !27
  %3427 = and i64 %3172, 3
  %3428 = icmp ult i64 %3172, 4
  br i1 %3428, label %3457, label %3429

3429:                                             ; preds = %3425
  %3430 = and i64 %3172, 9223372036854775804
  br label %3431

3431:                                             ; preds = %3431, %3429
  %3432 = phi i64 [ 0, %3429 ], [ %3454, %3431 ]
  %3433 = phi <2 x double> [ splat (double 1.000000e+09), %3429 ], [ %3453, %3431 ]
  %3434 = phi i64 [ 0, %3429 ], [ %3455, %3431 ]
  %3435 = getelementptr inbounds nuw %struct.Piece, ptr %3426, i64 %3432, i32 35
  %3436 = load <2 x double>, ptr %3435, align 16, !tbaa !25
  %3437 = fcmp olt <2 x double> %3433, %3436
  %3438 = select <2 x i1> %3437, <2 x double> %3433, <2 x double> %3436
  %3439 = or disjoint i64 %3432, 1
  %3440 = getelementptr inbounds nuw %struct.Piece, ptr %3426, i64 %3439, i32 35
  %3441 = load <2 x double>, ptr %3440, align 16, !tbaa !25
  %3442 = fcmp olt <2 x double> %3438, %3441
  %3443 = select <2 x i1> %3442, <2 x double> %3438, <2 x double> %3441
  %3444 = or disjoint i64 %3432, 2
  %3445 = getelementptr inbounds nuw %struct.Piece, ptr %3426, i64 %3444, i32 35
  %3446 = load <2 x double>, ptr %3445, align 16, !tbaa !25
  %3447 = fcmp olt <2 x double> %3443, %3446
  %3448 = select <2 x i1> %3447, <2 x double> %3443, <2 x double> %3446
  %3449 = or disjoint i64 %3432, 3
  %3450 = getelementptr inbounds nuw %struct.Piece, ptr %3426, i64 %3449, i32 35
  %3451 = load <2 x double>, ptr %3450, align 16, !tbaa !25
  %3452 = fcmp olt <2 x double> %3448, %3451
  %3453 = select <2 x i1> %3452, <2 x double> %3448, <2 x double> %3451
  %3454 = add nuw nsw i64 %3432, 4
  %3455 = add i64 %3434, 4
  %3456 = icmp eq i64 %3455, %3430
  br i1 %3456, label %3457, label %3431, !llvm.loop !113

3457:                                             ; preds = %3431, %3425
  %3458 = phi <2 x double> [ poison, %3425 ], [ %3453, %3431 ]
  %3459 = phi i64 [ 0, %3425 ], [ %3454, %3431 ]
  %3460 = phi <2 x double> [ splat (double 1.000000e+09), %3425 ], [ %3453, %3431 ]
  %3461 = icmp eq i64 %3427, 0
  br i1 %3461, label %3473, label %3462

3462:                                             ; preds = %3457, %3462
  %3463 = phi i64 [ %3470, %3462 ], [ %3459, %3457 ]
  %3464 = phi <2 x double> [ %3469, %3462 ], [ %3460, %3457 ]
  %3465 = phi i64 [ %3471, %3462 ], [ 0, %3457 ]
  %3466 = getelementptr inbounds nuw %struct.Piece, ptr %3426, i64 %3463, i32 35
  %3467 = load <2 x double>, ptr %3466, align 16, !tbaa !25
  %3468 = fcmp olt <2 x double> %3464, %3467
  %3469 = select <2 x i1> %3468, <2 x double> %3464, <2 x double> %3467
  %3470 = add nuw nsw i64 %3463, 1
  %3471 = add i64 %3465, 1
  %3472 = icmp eq i64 %3471, %3427
  br i1 %3472, label %3473, label %3462, !llvm.loop !114

3473:                                             ; preds = %3457, %3462, %3358
  %3474 = phi <2 x double> [ splat (double 1.000000e+09), %3358 ], [ %3458, %3457 ], [ %3469, %3462 ]
  %3475 = load <2 x double>, ptr %181, align 16, !tbaa !25
  %3476 = fsub <2 x double> %3475, %3409
  %3477 = fsub <2 x double> %3373, %3413
  %3478 = select <2 x i1> %3412, <2 x double> splat (double -1.000000e+00), <2 x double> %3477
  %3479 = fsub <2 x double> %3474, %3413
  %3480 = select <2 x i1> %3416, <2 x double> %3478, <2 x double> %3479
  %3481 = fsub <2 x double> %3476, %3413
  %3482 = select <2 x i1> %3419, <2 x double> %3480, <2 x double> %3481
  %3483 = fsub <2 x double> %3413, %3476
  %3484 = select <2 x i1> %3422, <2 x double> %3482, <2 x double> %3483
  %3485 = fcmp une <2 x double> %3411, zeroinitializer
  %3486 = fcmp oge <2 x double> %3191, splat (double 5.000000e-02)
  %3487 = and <2 x i1> %3486, %3485
  %3488 = fcmp olt <2 x double> %3424, zeroinitializer
  %3489 = and <2 x i1> %3487, %3488
  %3490 = fsub <2 x double> %3484, %3424
  %3491 = fmul <2 x double> %3490, splat (double 2.000000e-02)
  %3492 = fcmp ogt <2 x double> %3484, %3491
  %3493 = and <2 x i1> %3489, %3492
  %3494 = fsub <2 x double> %3424, %3484
  %3495 = fdiv <2 x double> %3424, %3494
  %3496 = fcmp olt <2 x double> %3495, splat (double 0x3FEE666666666666)
  %3497 = and <2 x i1> %3496, %3493
  %3498 = fcmp ogt <2 x double> %3395, %3191
  %3499 = select <2 x i1> %3497, <2 x i64> %3406, <2 x i64> zeroinitializer
  %3500 = icmp eq <2 x i64> %3499, zeroinitializer
  %3501 = select <2 x i1> %3500, <2 x i1> splat (i1 true), <2 x i1> %3498
  %3502 = select <2 x i1> %3501, <2 x double> %3395, <2 x double> %3191
  store <2 x double> %3502, ptr %155, align 16, !tbaa !25
  %3503 = fcmp ogt <2 x double> %3495, splat (double 5.000000e-02)
  %3504 = select <2 x i1> %3503, <2 x double> %3495, <2 x double> splat (double 5.000000e-02)
  %3505 = fcmp olt <2 x double> %3504, splat (double 0x3FEE666666666666)
  %3506 = select <2 x i1> %3505, <2 x double> %3504, <2 x double> splat (double 0x3FEE666666666666)
  %3507 = fmul <2 x double> %3191, %3506
  %3508 = fcmp ogt <2 x double> %3507, splat (double 0x3EB0C6F7A0B5ED8D)
  %3509 = select <2 x i1> %3508, <2 x double> %3507, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3510 = select <2 x i1> %3500, <2 x double> %3403, <2 x double> %3509
  store <2 x double> %3510, ptr %151, align 16, !tbaa !25
  %3511 = fadd <2 x double> %3405, splat (double 1.000000e+00)
  %3512 = select <2 x i1> %3500, <2 x double> %3405, <2 x double> %3511
  store <2 x double> %3512, ptr %136, align 16, !tbaa !25
  %3513 = xor <2 x i64> %3499, %3406
  %3514 = or <2 x i64> %3513, %3178
  %3515 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3514)
  %3516 = icmp eq i64 %3515, 0
  br i1 %3516, label %526, label %3573

3517:                                             ; preds = %3169, %3565
  %3518 = phi i64 [ 0, %3169 ], [ %3570, %3565 ]
  %3519 = load ptr, ptr %141, align 8, !tbaa !27
  %3520 = getelementptr inbounds nuw %struct.Piece, ptr %3519, i64 %3518
  %3521 = getelementptr inbounds nuw i8, ptr %3520, i64 1896
  %3522 = load ptr, ptr %3521, align 8, !tbaa !56
  %3523 = load <2 x double>, ptr %3522, align 16, !tbaa !25
  %3524 = getelementptr inbounds nuw i8, ptr %3520, i64 336
  %3525 = load <2 x double>, ptr %3524, align 16, !tbaa !25
  %3526 = getelementptr inbounds nuw i8, ptr %3522, i64 16
  %3527 = load <2 x double>, ptr %3526, align 16, !tbaa !25
  %3528 = fsub <2 x double> %3527, %3523
  %3529 = fneg <2 x double> %3525
  %3530 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3529, <2 x double> %3528, <2 x double> %3523)
  %3531 = getelementptr inbounds nuw i8, ptr %3520, i64 1888
  %3532 = load i64, ptr %3531, align 16, !tbaa !30
  %3533 = icmp eq i64 %3532, 0
  br i1 %3533, label %3565, label %3534

3534:                                             ; preds = %3517
  %3535 = getelementptr <2 x double>, ptr %3522, i64 %3532
  %3536 = getelementptr i8, ptr %3535, i64 -16
  %3537 = load <2 x double>, ptr %3536, align 16, !tbaa !25
  %3538 = load <2 x double>, ptr %3535, align 16, !tbaa !25
  %3539 = getelementptr inbounds nuw i8, ptr %3520, i64 720
  %3540 = load <2 x double>, ptr %3539, align 16, !tbaa !25
  %3541 = getelementptr inbounds nuw i8, ptr %3520, i64 736
  %3542 = load <2 x double>, ptr %3541, align 16, !tbaa !25
  %3543 = getelementptr inbounds nuw i8, ptr %3520, i64 16
  %3544 = load <2 x double>, ptr %3543, align 16, !tbaa !25
  %3545 = fsub <2 x double> %3542, %3544
  %3546 = fmul <2 x double> %3540, %3545
  %3547 = getelementptr inbounds nuw i8, ptr %3520, i64 144
  %3548 = load <2 x double>, ptr %3547, align 16, !tbaa !25
  %3549 = getelementptr inbounds nuw i8, ptr %3520, i64 704
  %3550 = load <2 x double>, ptr %3549, align 16, !tbaa !25
  %3551 = fdiv <2 x double> %3548, %3550
  %3552 = getelementptr inbounds nuw i8, ptr %3520, i64 48
  %3553 = load <2 x double>, ptr %3552, align 16, !tbaa !25
  %3554 = getelementptr inbounds nuw i8, ptr %3520, i64 64
  %3555 = load <2 x double>, ptr %3554, align 16, !tbaa !25
  %3556 = getelementptr inbounds nuw i8, ptr %3520, i64 80
  %3557 = load <2 x double>, ptr %3556, align 16, !tbaa !25
  %3558 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3538, <2 x double> %3557, <2 x double> %3555)
  %3559 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3538, <2 x double> %3558, <2 x double> %3553)
  %3560 = fdiv <2 x double> %3559, %3546
  %3561 = fmul <2 x double> %3538, %3560
  %3562 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3551, <2 x double> %3537, <2 x double> %3561)
  %3563 = fadd <2 x double> %3551, %3560
  %3564 = fdiv <2 x double> %3562, %3563
  br label %3565

3565:                                             ; preds = %3517, %3534
  %3566 = phi <2 x double> [ %3564, %3534 ], [ %3530, %3517 ]
  %3567 = getelementptr inbounds nuw i8, ptr %3520, i64 1808
  %3568 = load <2 x double>, ptr %3567, align 16, !tbaa !25
  %3569 = select <2 x i1> %3170, <2 x double> %3568, <2 x double> %3566
  store <2 x double> %3569, ptr %3567, align 16, !tbaa !25
  %3570 = add nuw nsw i64 %3518, 1
  %3571 = load i64, ptr %140, align 16, !tbaa !16
  %3572 = icmp slt i64 %3570, %3571
  br i1 %3572, label %3517, label %3171, !llvm.loop !116

3573:                                             ; preds = %3473
  %3574 = icmp eq <2 x i64> %3514, zeroinitializer
  %3575 = select <2 x i1> %3574, <2 x double> %3185, <2 x double> %3184
  store <2 x double> %3575, ptr %213, align 16, !tbaa !25
  %3576 = load <2 x double>, ptr %164, align 16, !tbaa !25
  %3577 = select <2 x i1> %3574, <2 x double> %3576, <2 x double> %3371
  store <2 x double> %3577, ptr %164, align 16, !tbaa !25
  %3578 = select <2 x i1> %3574, <2 x double> %3371, <2 x double> %3373
  store <2 x double> %3578, ptr %163, align 16, !tbaa !25
  %3579 = load <2 x double>, ptr %245, align 16, !tbaa !25
  %3580 = select <2 x i1> %3574, <2 x double> %3579, <2 x double> %3408
  store <2 x double> %3580, ptr %245, align 16, !tbaa !25
  %3581 = select <2 x i1> %3574, <2 x double> %3408, <2 x double> %3475
  store <2 x double> %3581, ptr %246, align 16, !tbaa !25
  %3582 = load <2 x double>, ptr %248, align 16, !tbaa !25
  %3583 = load <2 x double>, ptr %247, align 16, !tbaa !25
  %3584 = select <2 x i1> %3574, <2 x double> %3583, <2 x double> %3582
  store <2 x double> %3584, ptr %247, align 16, !tbaa !25
  %3585 = load <2 x double>, ptr %249, align 16, !tbaa !25
  %3586 = select <2 x i1> %3574, <2 x double> %3582, <2 x double> %3585
  store <2 x double> %3586, ptr %248, align 16, !tbaa !25
  %3587 = load <2 x double>, ptr %251, align 16, !tbaa !25
  %3588 = load <2 x double>, ptr %250, align 16, !tbaa !25
  %3589 = select <2 x i1> %3574, <2 x double> %3588, <2 x double> %3587
  store <2 x double> %3589, ptr %250, align 16, !tbaa !25
  %3590 = load <2 x double>, ptr %252, align 16, !tbaa !25
  %3591 = select <2 x i1> %3574, <2 x double> %3587, <2 x double> %3590
  store <2 x double> %3591, ptr %251, align 16, !tbaa !25
  %3592 = load <2 x double>, ptr %254, align 16, !tbaa !25
  %3593 = load <2 x double>, ptr %253, align 16, !tbaa !25
  %3594 = select <2 x i1> %3574, <2 x double> %3593, <2 x double> %3592
  store <2 x double> %3594, ptr %253, align 16, !tbaa !25
  %3595 = load <2 x double>, ptr %255, align 16, !tbaa !25
  %3596 = select <2 x i1> %3574, <2 x double> %3592, <2 x double> %3595
  store <2 x double> %3596, ptr %254, align 16, !tbaa !25
  %3597 = load <2 x double>, ptr %257, align 16, !tbaa !25
  %3598 = load <2 x double>, ptr %256, align 16, !tbaa !25
  %3599 = select <2 x i1> %3574, <2 x double> %3598, <2 x double> %3597
  store <2 x double> %3599, ptr %256, align 16, !tbaa !25
  %3600 = load <2 x double>, ptr %258, align 16, !tbaa !25
  %3601 = select <2 x i1> %3574, <2 x double> %3597, <2 x double> %3600
  store <2 x double> %3601, ptr %257, align 16, !tbaa !25
  %3602 = xor <2 x i64> %3514, splat (i64 -1)
  br i1 %3215, label %3603, label %3987

3603:                                             ; preds = %3573, %3943
  %3604 = phi i64 [ %3955, %3943 ], [ 0, %3573 ]
  %3605 = load ptr, ptr %141, align 8, !tbaa !27
  %3606 = getelementptr inbounds nuw %struct.Piece, ptr %3605, i64 %3604
  %3607 = getelementptr inbounds nuw i8, ptr %3606, i64 416
  %3608 = load <2 x double>, ptr %3607, align 16, !tbaa !25
  %3609 = fcmp ogt <2 x double> %3608, zeroinitializer
  %3610 = bitcast <2 x i1> %3609 to i2
  %3611 = icmp eq i2 %3610, 0
  %3612 = load i64, ptr %131, align 8, !tbaa !20
  br i1 %3611, label %3870, label %3613

3613:                                             ; preds = %3603
  %3614 = add i64 %3612, -1
  %3615 = getelementptr inbounds nuw i8, ptr %3606, i64 1104
  %3616 = load <2 x double>, ptr %3615, align 16, !tbaa !25
  %3617 = getelementptr inbounds nuw i8, ptr %3606, i64 912
  %3618 = load <2 x double>, ptr %3617, align 16, !tbaa !25
  %3619 = getelementptr inbounds nuw i8, ptr %3606, i64 1888
  %3620 = load i64, ptr %3619, align 16, !tbaa !30
  %3621 = icmp sgt i64 %3612, %3620
  br i1 %3621, label %3630, label %3622

3622:                                             ; preds = %3613
  %3623 = getelementptr inbounds nuw i8, ptr %3606, i64 1984
  %3624 = load ptr, ptr %3623, align 16, !tbaa !66
  %3625 = getelementptr inbounds <2 x double>, ptr %3624, i64 %3614
  %3626 = load <2 x double>, ptr %3625, align 16, !tbaa !25
  %3627 = getelementptr inbounds nuw i8, ptr %3606, i64 384
  %3628 = load <2 x double>, ptr %3627, align 16, !tbaa !25
  %3629 = fmul <2 x double> %3626, %3628
  br label %3639

3630:                                             ; preds = %3613
  %3631 = getelementptr inbounds nuw i8, ptr %3606, i64 384
  %3632 = load <2 x double>, ptr %3631, align 16, !tbaa !25
  %3633 = getelementptr inbounds nuw i8, ptr %3606, i64 1984
  %3634 = load ptr, ptr %3633, align 16, !tbaa !66
  %3635 = getelementptr inbounds <2 x double>, ptr %3634, i64 %3614
  %3636 = load <2 x double>, ptr %3635, align 16, !tbaa !25
  %3637 = fsub <2 x double> %3616, %3632
  %3638 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3636, <2 x double> %3637, <2 x double> %3632)
  br label %3639

3639:                                             ; preds = %3630, %3622
  %3640 = phi <2 x double> [ %3628, %3622 ], [ %3632, %3630 ]
  %3641 = phi <2 x double> [ %3629, %3622 ], [ %3638, %3630 ]
  %3642 = getelementptr inbounds nuw i8, ptr %3606, i64 752
  %3643 = load <2 x double>, ptr %3642, align 16, !tbaa !25
  %3644 = fcmp ole <2 x double> %3641, %3643
  %3645 = getelementptr inbounds nuw i8, ptr %3606, i64 1824
  %3646 = load <2 x double>, ptr %3645, align 16, !tbaa !25
  %3647 = fcmp oeq <2 x double> %3646, zeroinitializer
  %3648 = select <2 x i1> %3647, <2 x i1> %3644, <2 x i1> zeroinitializer
  %3649 = select <2 x i1> %3648, <2 x i64> %3514, <2 x i64> zeroinitializer
  %3650 = xor <2 x i64> %3649, %3514
  %3651 = fsub <2 x double> %3616, %3618
  %3652 = getelementptr inbounds nuw i8, ptr %3606, i64 384
  %3653 = fsub <2 x double> %3618, %3640
  %3654 = fdiv <2 x double> %3651, %3653
  %3655 = getelementptr inbounds nuw i8, ptr %3606, i64 1928
  %3656 = load ptr, ptr %3655, align 8, !tbaa !59
  %3657 = getelementptr inbounds <2 x double>, ptr %3656, i64 %3620
  %3658 = load <2 x double>, ptr %3657, align 16, !tbaa !25
  %3659 = getelementptr inbounds nuw i8, ptr %3606, i64 1936
  %3660 = load ptr, ptr %3659, align 16, !tbaa !46
  %3661 = getelementptr inbounds <2 x double>, ptr %3660, i64 %3620
  %3662 = load <2 x double>, ptr %3661, align 16, !tbaa !25
  %3663 = icmp eq <2 x i64> %3649, zeroinitializer
  %3664 = select <2 x i1> %3663, <2 x double> %3662, <2 x double> %3658
  store <2 x double> %3664, ptr %3661, align 16, !tbaa !25
  %3665 = load i64, ptr %3619, align 16, !tbaa !30
  %3666 = add nsw i64 %3665, 1
  %3667 = icmp slt i64 %3666, %3614
  br i1 %3667, label %3668, label %3672

3668:                                             ; preds = %3639
  %3669 = getelementptr inbounds nuw i8, ptr %3606, i64 2000
  br label %3714

3670:                                             ; preds = %3714
  %3671 = load i64, ptr %3619, align 16, !tbaa !30
  br label %3672

3672:                                             ; preds = %3670, %3639
  %3673 = phi i64 [ %3665, %3639 ], [ %3671, %3670 ]
  %3674 = phi <2 x double> [ %3658, %3639 ], [ %3719, %3670 ]
  %3675 = icmp sgt i64 %3612, %3673
  br i1 %3675, label %3683, label %3676

3676:                                             ; preds = %3672
  %3677 = getelementptr inbounds nuw i8, ptr %3606, i64 1984
  %3678 = load ptr, ptr %3677, align 16, !tbaa !66
  %3679 = getelementptr inbounds <2 x double>, ptr %3678, i64 %3614
  %3680 = load <2 x double>, ptr %3679, align 16, !tbaa !25
  %3681 = load <2 x double>, ptr %3652, align 16, !tbaa !25
  %3682 = fmul <2 x double> %3680, %3681
  br label %3691

3683:                                             ; preds = %3672
  %3684 = load <2 x double>, ptr %3652, align 16, !tbaa !25
  %3685 = getelementptr inbounds nuw i8, ptr %3606, i64 1984
  %3686 = load ptr, ptr %3685, align 16, !tbaa !66
  %3687 = getelementptr inbounds <2 x double>, ptr %3686, i64 %3614
  %3688 = load <2 x double>, ptr %3687, align 16, !tbaa !25
  %3689 = fsub <2 x double> %3618, %3684
  %3690 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3688, <2 x double> %3689, <2 x double> %3684)
  br label %3691

3691:                                             ; preds = %3683, %3676
  %3692 = phi <2 x double> [ %3682, %3676 ], [ %3690, %3683 ]
  %3693 = load ptr, ptr %3655, align 8, !tbaa !59
  %3694 = getelementptr inbounds <2 x double>, ptr %3693, i64 %3614
  %3695 = load <2 x double>, ptr %3694, align 16, !tbaa !25
  %3696 = load ptr, ptr %3659, align 16, !tbaa !46
  %3697 = getelementptr inbounds <2 x double>, ptr %3696, i64 %3614
  %3698 = fsub <2 x double> %3674, %3695
  %3699 = fsub <2 x double> %3641, %3692
  %3700 = load <2 x double>, ptr %3642, align 16, !tbaa !25
  %3701 = fsub <2 x double> %3700, %3692
  %3702 = fdiv <2 x double> %3699, %3701
  %3703 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3698, <2 x double> %3702, <2 x double> %3695)
  %3704 = load <2 x double>, ptr %3697, align 16, !tbaa !25
  %3705 = select <2 x i1> %3663, <2 x double> %3704, <2 x double> %3703
  store <2 x double> %3705, ptr %3697, align 16, !tbaa !25
  %3706 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3650)
  %3707 = icmp eq i64 %3706, 0
  br i1 %3707, label %3868, label %3708

3708:                                             ; preds = %3691
  %3709 = getelementptr inbounds nuw i8, ptr %3606, i64 1984
  %3710 = getelementptr inbounds nuw i8, ptr %3606, i64 784
  %3711 = getelementptr inbounds nuw i8, ptr %3606, i64 208
  %3712 = extractelement <2 x i64> %3650, i64 0
  %3713 = extractelement <2 x i64> %3650, i64 1
  br label %3732

3714:                                             ; preds = %3668, %3714
  %3715 = phi i64 [ %3666, %3668 ], [ %3730, %3714 ]
  %3716 = phi <2 x double> [ %3658, %3668 ], [ %3719, %3714 ]
  %3717 = load ptr, ptr %3655, align 8, !tbaa !59
  %3718 = getelementptr inbounds <2 x double>, ptr %3717, i64 %3715
  %3719 = load <2 x double>, ptr %3718, align 16, !tbaa !25
  %3720 = load ptr, ptr %3659, align 16, !tbaa !46
  %3721 = getelementptr inbounds <2 x double>, ptr %3720, i64 %3715
  %3722 = fsub <2 x double> %3716, %3719
  %3723 = load ptr, ptr %3669, align 16, !tbaa !117
  %3724 = getelementptr inbounds <2 x double>, ptr %3723, i64 %3715
  %3725 = load <2 x double>, ptr %3724, align 16, !tbaa !25
  %3726 = fmul <2 x double> %3654, %3725
  %3727 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3722, <2 x double> %3726, <2 x double> %3719)
  %3728 = load <2 x double>, ptr %3721, align 16, !tbaa !25
  %3729 = select <2 x i1> %3663, <2 x double> %3728, <2 x double> %3727
  store <2 x double> %3729, ptr %3721, align 16, !tbaa !25
  %3730 = add nsw i64 %3715, 1
  %3731 = icmp eq i64 %3730, %3614
  br i1 %3731, label %3670, label %3714, !llvm.loop !118

3732:                                             ; preds = %3708, %3867
  %3733 = phi i1 [ true, %3708 ], [ false, %3867 ]
  %3734 = phi i64 [ %3712, %3708 ], [ %3713, %3867 ]
  %3735 = phi i64 [ 0, %3708 ], [ 1, %3867 ]
  %3736 = icmp eq i64 %3734, 0
  br i1 %3736, label %3867, label %3737

3737:                                             ; preds = %3732
  %3738 = load i64, ptr %131, align 8, !tbaa !20
  %3739 = load i64, ptr %3619, align 16, !tbaa !30
  %3740 = getelementptr inbounds nuw double, ptr %3652, i64 %3735
  %3741 = load double, ptr %3740, align 8, !tbaa !41
  %3742 = getelementptr inbounds nuw double, ptr %3642, i64 %3735
  %3743 = load double, ptr %3742, align 8, !tbaa !41
  %3744 = add nsw i64 %3738, -1
  %3745 = icmp sgt i64 %3738, %3739
  br i1 %3745, label %3746, label %3867

3746:                                             ; preds = %3737
  %3747 = getelementptr inbounds nuw double, ptr %3617, i64 %3735
  %3748 = load double, ptr %3747, align 8, !tbaa !41
  %3749 = getelementptr inbounds nuw double, ptr %3615, i64 %3735
  %3750 = load double, ptr %3749, align 8, !tbaa !41
  %3751 = load ptr, ptr %3709, align 16
  %3752 = getelementptr i8, ptr %3751, i64 16
  %3753 = getelementptr double, ptr %3752, i64 %3735
  %3754 = fsub double %3748, %3741
  %3755 = getelementptr double, ptr %3751, i64 %3735
  %3756 = fsub double %3750, %3741
  %3757 = load ptr, ptr %3655, align 8, !tbaa !59
  %3758 = getelementptr double, ptr %3757, i64 %3735
  %3759 = load ptr, ptr %3659, align 16, !tbaa !46
  %3760 = getelementptr double, ptr %3759, i64 %3735
  %3761 = getelementptr <2 x double>, ptr %3755, i64 %3744
  br label %3789

3762:                                             ; preds = %3835
  %3763 = getelementptr inbounds nuw double, ptr %3645, i64 %3735
  %3764 = load double, ptr %3763, align 8, !tbaa !41
  %3765 = fcmp ogt double %3764, 0.000000e+00
  %3766 = fcmp ogt double %3846, 0.000000e+00
  %3767 = select i1 %3765, i1 %3766, i1 false
  br i1 %3767, label %3768, label %3867

3768:                                             ; preds = %3762
  %3769 = getelementptr inbounds nuw double, ptr %3710, i64 %3735
  %3770 = getelementptr inbounds nuw double, ptr %3711, i64 %3735
  %3771 = sub i64 %3738, %3739
  %3772 = add i64 %3739, 1
  %3773 = and i64 %3771, 1
  %3774 = icmp eq i64 %3773, 0
  br i1 %3774, label %3784, label %3775

3775:                                             ; preds = %3768
  %3776 = load double, ptr %3769, align 8, !tbaa !41
  %3777 = load double, ptr %3770, align 8, !tbaa !41
  %3778 = fmul double %3846, %3777
  %3779 = fdiv double %3776, %3778
  %3780 = getelementptr <2 x double>, ptr %3760, i64 %3739
  %3781 = load double, ptr %3780, align 8, !tbaa !41
  %3782 = fmul double %3781, %3779
  store double %3782, ptr %3780, align 8, !tbaa !41
  %3783 = add nsw i64 %3739, 1
  br label %3784

3784:                                             ; preds = %3775, %3768
  %3785 = phi i64 [ %3739, %3768 ], [ %3783, %3775 ]
  %3786 = icmp eq i64 %3738, %3772
  br i1 %3786, label %3867, label %3787

3787:                                             ; preds = %3784
  %3788 = getelementptr i8, ptr %3760, i64 16
  br label %3849

3789:                                             ; preds = %3835, %3746
  %3790 = phi double [ 0.000000e+00, %3746 ], [ %3846, %3835 ]
  %3791 = phi i64 [ %3744, %3746 ], [ %3847, %3835 ]
  %3792 = icmp eq i64 %3791, %3744
  br i1 %3792, label %3793, label %3796

3793:                                             ; preds = %3789
  %3794 = load double, ptr %3761, align 8, !tbaa !41
  %3795 = tail call noundef double @llvm.fmuladd.f64(double %3794, double %3754, double %3741)
  br label %3807

3796:                                             ; preds = %3789
  %3797 = getelementptr <2 x double>, ptr %3753, i64 %3791
  %3798 = load double, ptr %3797, align 8, !tbaa !41
  %3799 = tail call noundef double @llvm.fmuladd.f64(double %3798, double %3754, double %3741)
  %3800 = getelementptr <2 x double>, ptr %3755, i64 %3791
  %3801 = load double, ptr %3800, align 8, !tbaa !41
  %3802 = tail call noundef double @llvm.fmuladd.f64(double %3801, double %3754, double %3741)
  %3803 = tail call noundef double @llvm.fmuladd.f64(double %3798, double %3756, double %3741)
  %3804 = fcmp ult double %3803, %3799
  br i1 %3804, label %3805, label %3807

3805:                                             ; preds = %3796
  %3806 = add nsw i64 %3791, 1
  br label %3807

3807:                                             ; preds = %3805, %3796, %3793
  %3808 = phi double [ %3802, %3805 ], [ %3802, %3796 ], [ %3795, %3793 ]
  %3809 = phi double [ %3799, %3805 ], [ %3799, %3796 ], [ %3743, %3793 ]
  %3810 = phi i64 [ %3806, %3805 ], [ %3791, %3796 ], [ %3744, %3793 ]
  %3811 = icmp sgt i64 %3810, %3739
  br i1 %3811, label %3812, label %3835

3812:                                             ; preds = %3807
  %3813 = load ptr, ptr %3655, align 8
  %3814 = getelementptr double, ptr %3813, i64 %3735
  br label %3815

3815:                                             ; preds = %3830, %3812
  %3816 = phi i64 [ %3810, %3812 ], [ %3833, %3830 ]
  %3817 = phi double [ 0.000000e+00, %3812 ], [ %3832, %3830 ]
  %3818 = phi double [ %3809, %3812 ], [ %3831, %3830 ]
  %3819 = getelementptr <2 x double>, ptr %3755, i64 %3816
  %3820 = load double, ptr %3819, align 8, !tbaa !41
  %3821 = tail call noundef double @llvm.fmuladd.f64(double %3820, double %3756, double %3741)
  %3822 = fcmp ogt double %3821, %3808
  br i1 %3822, label %3823, label %3835

3823:                                             ; preds = %3815
  %3824 = fcmp ogt double %3818, %3821
  br i1 %3824, label %3825, label %3830

3825:                                             ; preds = %3823
  %3826 = getelementptr <2 x double>, ptr %3814, i64 %3816
  %3827 = load double, ptr %3826, align 8, !tbaa !41
  %3828 = fsub double %3818, %3821
  %3829 = tail call double @llvm.fmuladd.f64(double %3827, double %3828, double %3817)
  br label %3830

3830:                                             ; preds = %3825, %3823
  %3831 = phi double [ %3821, %3825 ], [ %3818, %3823 ]
  %3832 = phi double [ %3829, %3825 ], [ %3817, %3823 ]
  %3833 = add nsw i64 %3816, -1
  %3834 = icmp sgt i64 %3833, %3739
  br i1 %3834, label %3815, label %3835, !llvm.loop !119

3835:                                             ; preds = %3830, %3815, %3807
  %3836 = phi double [ %3809, %3807 ], [ %3818, %3815 ], [ %3831, %3830 ]
  %3837 = phi double [ 0.000000e+00, %3807 ], [ %3817, %3815 ], [ %3832, %3830 ]
  %3838 = phi i64 [ %3810, %3807 ], [ %3816, %3815 ], [ %3739, %3830 ]
  %3839 = getelementptr <2 x double>, ptr %3758, i64 %3838
  %3840 = load double, ptr %3839, align 8, !tbaa !41
  %3841 = fsub double %3836, %3808
  %3842 = tail call double @llvm.fmuladd.f64(double %3840, double %3841, double %3837)
  %3843 = fsub double %3809, %3808
  %3844 = fdiv double %3842, %3843
  %3845 = getelementptr <2 x double>, ptr %3760, i64 %3791
  store double %3844, ptr %3845, align 8, !tbaa !41
  %3846 = fadd double %3790, %3842
  %3847 = add nsw i64 %3791, -1
  %3848 = icmp sgt i64 %3791, %3739
  br i1 %3848, label %3789, label %3762, !llvm.loop !120

3849:                                             ; preds = %3849, %3787
  %3850 = phi i64 [ %3785, %3787 ], [ %3865, %3849 ]
  %3851 = load double, ptr %3769, align 8, !tbaa !41
  %3852 = load double, ptr %3770, align 8, !tbaa !41
  %3853 = fmul double %3846, %3852
  %3854 = fdiv double %3851, %3853
  %3855 = getelementptr <2 x double>, ptr %3760, i64 %3850
  %3856 = load double, ptr %3855, align 8, !tbaa !41
  %3857 = fmul double %3856, %3854
  store double %3857, ptr %3855, align 8, !tbaa !41
  %3858 = load double, ptr %3769, align 8, !tbaa !41
  %3859 = load double, ptr %3770, align 8, !tbaa !41
  %3860 = fmul double %3846, %3859
  %3861 = fdiv double %3858, %3860
  %3862 = getelementptr <2 x double>, ptr %3788, i64 %3850
  %3863 = load double, ptr %3862, align 8, !tbaa !41
  %3864 = fmul double %3863, %3861
  store double %3864, ptr %3862, align 8, !tbaa !41
  %3865 = add nsw i64 %3850, 2
  %3866 = icmp eq i64 %3865, %3738
  br i1 %3866, label %3867, label %3849, !llvm.loop !121

3867:                                             ; preds = %3784, %3849, %3762, %3737, %3732
  br i1 %3733, label %3732, label %3868, !llvm.loop !122

3868:                                             ; preds = %3867, %3691
  %3869 = load i64, ptr %131, align 8, !tbaa !20
  br label %3870

3870:                                             ; preds = %3603, %3868
  %3871 = phi i64 [ %3612, %3603 ], [ %3869, %3868 ]
  %3872 = icmp sgt i64 %3871, 0
  br i1 %3872, label %3873, label %3877

3873:                                             ; preds = %3870
  %3874 = getelementptr inbounds nuw i8, ptr %3606, i64 1912
  %3875 = getelementptr inbounds nuw i8, ptr %3606, i64 1904
  %3876 = getelementptr inbounds nuw i8, ptr %3606, i64 1896
  br label %3887

3877:                                             ; preds = %3887, %3870
  %3878 = load i64, ptr %132, align 16, !tbaa !21
  %3879 = icmp sgt i64 %3878, 0
  br i1 %3879, label %3880, label %3906

3880:                                             ; preds = %3877
  %3881 = getelementptr inbounds nuw i8, ptr %3606, i64 2080
  %3882 = getelementptr inbounds nuw i8, ptr %3606, i64 2072
  %3883 = getelementptr inbounds nuw i8, ptr %3606, i64 2064
  %3884 = getelementptr inbounds nuw i8, ptr %3606, i64 2032
  %3885 = getelementptr inbounds nuw i8, ptr %3606, i64 2024
  %3886 = getelementptr inbounds nuw i8, ptr %3606, i64 2016
  br label %3910

3887:                                             ; preds = %3873, %3887
  %3888 = phi i64 [ 0, %3873 ], [ %3903, %3887 ]
  %3889 = load ptr, ptr %3874, align 8, !tbaa !55
  %3890 = getelementptr inbounds nuw <2 x double>, ptr %3889, i64 %3888
  %3891 = load ptr, ptr %3875, align 16, !tbaa !45
  %3892 = getelementptr inbounds nuw <2 x double>, ptr %3891, i64 %3888
  %3893 = load <2 x double>, ptr %3892, align 16, !tbaa !25
  %3894 = load <2 x double>, ptr %3890, align 16, !tbaa !25
  %3895 = select <2 x i1> %3574, <2 x double> %3894, <2 x double> %3893
  store <2 x double> %3895, ptr %3890, align 16, !tbaa !25
  %3896 = load ptr, ptr %3875, align 16, !tbaa !45
  %3897 = getelementptr inbounds nuw <2 x double>, ptr %3896, i64 %3888
  %3898 = load ptr, ptr %3876, align 8, !tbaa !56
  %3899 = getelementptr inbounds nuw <2 x double>, ptr %3898, i64 %3888
  %3900 = load <2 x double>, ptr %3899, align 16, !tbaa !25
  %3901 = load <2 x double>, ptr %3897, align 16, !tbaa !25
  %3902 = select <2 x i1> %3574, <2 x double> %3901, <2 x double> %3900
  store <2 x double> %3902, ptr %3897, align 16, !tbaa !25
  %3903 = add nuw nsw i64 %3888, 1
  %3904 = load i64, ptr %131, align 8, !tbaa !20
  %3905 = icmp slt i64 %3903, %3904
  br i1 %3905, label %3887, label %3877, !llvm.loop !123

3906:                                             ; preds = %3910, %3877
  %3907 = getelementptr inbounds nuw i8, ptr %3606, i64 1120
  %3908 = getelementptr inbounds nuw i8, ptr %3606, i64 928
  %3909 = getelementptr inbounds nuw i8, ptr %3606, i64 736
  br label %3958

3910:                                             ; preds = %3880, %3910
  %3911 = phi i64 [ 0, %3880 ], [ %3940, %3910 ]
  %3912 = load ptr, ptr %3881, align 16, !tbaa !62
  %3913 = getelementptr inbounds nuw <2 x double>, ptr %3912, i64 %3911
  %3914 = load ptr, ptr %3882, align 8, !tbaa !48
  %3915 = getelementptr inbounds nuw <2 x double>, ptr %3914, i64 %3911
  %3916 = load <2 x double>, ptr %3915, align 16, !tbaa !25
  %3917 = load <2 x double>, ptr %3913, align 16, !tbaa !25
  %3918 = select <2 x i1> %3574, <2 x double> %3917, <2 x double> %3916
  store <2 x double> %3918, ptr %3913, align 16, !tbaa !25
  %3919 = load ptr, ptr %3882, align 8, !tbaa !48
  %3920 = getelementptr inbounds nuw <2 x double>, ptr %3919, i64 %3911
  %3921 = load ptr, ptr %3883, align 16, !tbaa !73
  %3922 = getelementptr inbounds nuw <2 x double>, ptr %3921, i64 %3911
  %3923 = load <2 x double>, ptr %3922, align 16, !tbaa !25
  %3924 = load <2 x double>, ptr %3920, align 16, !tbaa !25
  %3925 = select <2 x i1> %3574, <2 x double> %3924, <2 x double> %3923
  store <2 x double> %3925, ptr %3920, align 16, !tbaa !25
  %3926 = load ptr, ptr %3884, align 16, !tbaa !63
  %3927 = getelementptr inbounds nuw <2 x double>, ptr %3926, i64 %3911
  %3928 = load ptr, ptr %3885, align 8, !tbaa !49
  %3929 = getelementptr inbounds nuw <2 x double>, ptr %3928, i64 %3911
  %3930 = load <2 x double>, ptr %3929, align 16, !tbaa !25
  %3931 = load <2 x double>, ptr %3927, align 16, !tbaa !25
  %3932 = select <2 x i1> %3574, <2 x double> %3931, <2 x double> %3930
  store <2 x double> %3932, ptr %3927, align 16, !tbaa !25
  %3933 = load ptr, ptr %3885, align 8, !tbaa !49
  %3934 = getelementptr inbounds nuw <2 x double>, ptr %3933, i64 %3911
  %3935 = load ptr, ptr %3886, align 16, !tbaa !104
  %3936 = getelementptr inbounds nuw <2 x double>, ptr %3935, i64 %3911
  %3937 = load <2 x double>, ptr %3936, align 16, !tbaa !25
  %3938 = load <2 x double>, ptr %3934, align 16, !tbaa !25
  %3939 = select <2 x i1> %3574, <2 x double> %3938, <2 x double> %3937
  store <2 x double> %3939, ptr %3934, align 16, !tbaa !25
  %3940 = add nuw nsw i64 %3911, 1
  %3941 = load i64, ptr %132, align 16, !tbaa !21
  %3942 = icmp slt i64 %3940, %3941
  br i1 %3942, label %3910, label %3906, !llvm.loop !124

3943:                                             ; preds = %3958
  %3944 = getelementptr inbounds nuw i8, ptr %3606, i64 1856
  %3945 = getelementptr inbounds nuw i8, ptr %3606, i64 1424
  %3946 = load <2 x double>, ptr %3945, align 16, !tbaa !25
  %3947 = fcmp ogt <2 x double> %3946, zeroinitializer
  %3948 = load <2 x double>, ptr %150, align 16, !tbaa !25
  %3949 = fcmp une <2 x double> %3948, splat (double 2.000000e+00)
  %3950 = and <2 x i1> %3947, %3949
  %3951 = select <2 x i1> %3950, <2 x i64> %3514, <2 x i64> zeroinitializer
  %3952 = load <2 x i64>, ptr %3944, align 16, !tbaa !25
  %3953 = and <2 x i64> %3952, %3602
  %3954 = or disjoint <2 x i64> %3951, %3953
  store <2 x i64> %3954, ptr %3944, align 16, !tbaa !25
  %3955 = add nuw nsw i64 %3604, 1
  %3956 = load i64, ptr %140, align 16, !tbaa !16
  %3957 = icmp slt i64 %3955, %3956
  br i1 %3957, label %3603, label %3979, !llvm.loop !125

3958:                                             ; preds = %3958, %3906
  %3959 = phi i64 [ 0, %3906 ], [ %3977, %3958 ]
  %3960 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3907, i64 0, i64 %3959
  %3961 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3908, i64 0, i64 %3959
  %3962 = load <2 x double>, ptr %3961, align 16, !tbaa !25
  %3963 = load <2 x double>, ptr %3960, align 16, !tbaa !25
  %3964 = select <2 x i1> %3574, <2 x double> %3963, <2 x double> %3962
  store <2 x double> %3964, ptr %3960, align 16, !tbaa !25
  %3965 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3909, i64 0, i64 %3959
  %3966 = load <2 x double>, ptr %3965, align 16, !tbaa !25
  %3967 = select <2 x i1> %3574, <2 x double> %3962, <2 x double> %3966
  store <2 x double> %3967, ptr %3961, align 16, !tbaa !25
  %3968 = or disjoint i64 %3959, 1
  %3969 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3907, i64 0, i64 %3968
  %3970 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3908, i64 0, i64 %3968
  %3971 = load <2 x double>, ptr %3970, align 16, !tbaa !25
  %3972 = load <2 x double>, ptr %3969, align 16, !tbaa !25
  %3973 = select <2 x i1> %3574, <2 x double> %3972, <2 x double> %3971
  store <2 x double> %3973, ptr %3969, align 16, !tbaa !25
  %3974 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3909, i64 0, i64 %3968
  %3975 = load <2 x double>, ptr %3974, align 16, !tbaa !25
  %3976 = select <2 x i1> %3574, <2 x double> %3971, <2 x double> %3975
  store <2 x double> %3976, ptr %3970, align 16, !tbaa !25
  %3977 = add nuw nsw i64 %3959, 2
  %3978 = icmp eq i64 %3977, 12
  br i1 %3978, label %3943, label %3958, !llvm.loop !126

3979:                                             ; preds = %3943
  %3980 = load <2 x double>, ptr %157, align 16, !tbaa !25
  %3981 = load <2 x double>, ptr %177, align 16, !tbaa !25
  %3982 = load <2 x double>, ptr %214, align 16, !tbaa !25
  %3983 = load <2 x double>, ptr %155, align 16, !tbaa !25
  %3984 = load <2 x double>, ptr %212, align 16, !tbaa !25
  %3985 = fdiv <2 x double> %3982, %3187
  %3986 = icmp sgt i64 %3956, 0
  br label %3987

3987:                                             ; preds = %3573, %3979
  %3988 = phi <2 x double> [ %3985, %3979 ], [ %3197, %3573 ]
  %3989 = phi i1 [ %3986, %3979 ], [ false, %3573 ]
  %3990 = phi <2 x double> [ %3984, %3979 ], [ %3176, %3573 ]
  %3991 = phi <2 x double> [ %3983, %3979 ], [ %3502, %3573 ]
  %3992 = phi <2 x double> [ %3981, %3979 ], [ %3193, %3573 ]
  %3993 = phi <2 x double> [ %3980, %3979 ], [ %3191, %3573 ]
  %3994 = load <2 x double>, ptr %148, align 16, !tbaa !25
  %3995 = fadd <2 x double> %3994, %3993
  %3996 = select <2 x i1> %3574, <2 x double> %3994, <2 x double> %3995
  store <2 x double> %3996, ptr %148, align 16, !tbaa !25
  %3997 = load <2 x double>, ptr %156, align 16, !tbaa !25
  %3998 = select <2 x i1> %3574, <2 x double> %3997, <2 x double> %3993
  store <2 x double> %3998, ptr %156, align 16, !tbaa !25
  %3999 = load <2 x double>, ptr %135, align 16, !tbaa !25
  %4000 = fadd <2 x double> %3999, splat (double 1.000000e+00)
  %4001 = select <2 x i1> %3574, <2 x double> %3999, <2 x double> %4000
  store <2 x double> %4001, ptr %135, align 16, !tbaa !25
  %4002 = load <2 x double>, ptr %137, align 16, !tbaa !25
  %4003 = fcmp olt <2 x double> %4002, %3993
  %4004 = select <2 x i1> %3574, <2 x i1> splat (i1 true), <2 x i1> %4003
  %4005 = select <2 x i1> %4004, <2 x double> %4002, <2 x double> %3993
  store <2 x double> %4005, ptr %137, align 16, !tbaa !25
  %4006 = fcmp une <2 x double> %3992, zeroinitializer
  %4007 = fcmp ueq <2 x double> %3186, zeroinitializer
  %4008 = or <2 x i1> %4007, %4006
  %4009 = fcmp olt <2 x double> %3988, splat (double 1.800000e+00)
  %4010 = select <2 x i1> %4009, <2 x double> %3988, <2 x double> splat (double 1.800000e+00)
  %4011 = select <2 x i1> %4008, <2 x double> splat (double 1.800000e+00), <2 x double> %4010
  %4012 = fcmp ogt <2 x double> %4011, splat (double 2.000000e-01)
  %4013 = select <2 x i1> %4012, <2 x double> %4011, <2 x double> splat (double 2.000000e-01)
  %4014 = fmul <2 x double> %3993, %4013
  %4015 = fmul <2 x double> %3993, splat (double 4.000000e+00)
  %4016 = fcmp olt <2 x double> %3991, %4015
  %4017 = select <2 x i1> %4016, <2 x double> %3991, <2 x double> %4015
  %4018 = fcmp ogt <2 x double> %4014, %4017
  %4019 = select <2 x i1> %4018, <2 x double> %4014, <2 x double> %4017
  %4020 = select <2 x i1> %3574, <2 x double> %3991, <2 x double> zeroinitializer
  store <2 x double> %4020, ptr %155, align 16, !tbaa !25
  %4021 = select <2 x i1> %3574, <2 x double> %3990, <2 x double> zeroinitializer
  store <2 x double> %4021, ptr %212, align 16, !tbaa !25
  %4022 = load <2 x i64>, ptr %158, align 16, !tbaa !25
  %4023 = and <2 x i64> %4022, %3602
  store <2 x i64> %4023, ptr %158, align 16, !tbaa !25
  br i1 %3989, label %4024, label %4321

4024:                                             ; preds = %3987, %4314
  %4025 = phi i64 [ %4316, %4314 ], [ 0, %3987 ]
  %4026 = phi <2 x double> [ %4315, %4314 ], [ %4019, %3987 ]
  %4027 = load ptr, ptr %141, align 8, !tbaa !27
  %4028 = getelementptr inbounds nuw %struct.Piece, ptr %4027, i64 %4025
  %4029 = getelementptr inbounds nuw i8, ptr %4028, i64 944
  %4030 = load <2 x double>, ptr %4029, align 16, !tbaa !25
  %4031 = getelementptr inbounds nuw i8, ptr %4028, i64 368
  %4032 = load <2 x double>, ptr %4031, align 16, !tbaa !25
  %4033 = fmul <2 x double> %4032, splat (double 1.001000e+00)
  %4034 = fcmp ole <2 x double> %4030, %4033
  %4035 = getelementptr inbounds nuw i8, ptr %4028, i64 400
  %4036 = load <2 x double>, ptr %4035, align 16, !tbaa !25
  %4037 = getelementptr inbounds nuw i8, ptr %4028, i64 1008
  %4038 = load <2 x double>, ptr %4037, align 16, !tbaa !25
  %4039 = fsub <2 x double> %4036, %4038
  %4040 = fmul <2 x double> %4036, splat (double 1.000000e-04)
  %4041 = fcmp ole <2 x double> %4039, %4040
  %4042 = getelementptr inbounds nuw i8, ptr %4028, i64 1840
  %4043 = load <2 x i64>, ptr %4042, align 16, !tbaa !25
  %4044 = and <2 x i64> %4043, %3514
  %4045 = getelementptr inbounds nuw i8, ptr %4028, i64 1824
  %4046 = load <2 x double>, ptr %4045, align 16, !tbaa !25
  %4047 = fcmp oeq <2 x double> %4046, zeroinitializer
  %4048 = and <2 x i1> %4034, %4047
  %4049 = fcmp oeq <2 x double> %4046, splat (double 1.000000e+00)
  %4050 = and <2 x i1> %4041, %4049
  %4051 = or <2 x i1> %4048, %4050
  %4052 = select <2 x i1> %4051, <2 x i64> %4044, <2 x i64> zeroinitializer
  %4053 = fadd <2 x double> %4046, splat (double 1.000000e+00)
  %4054 = icmp eq <2 x i64> %4052, zeroinitializer
  %4055 = select <2 x i1> %4054, <2 x double> %4046, <2 x double> %4053
  store <2 x double> %4055, ptr %4045, align 16, !tbaa !25
  %4056 = getelementptr inbounds nuw i8, ptr %4028, i64 1856
  %4057 = load <2 x i64>, ptr %4056, align 16, !tbaa !25
  %4058 = or <2 x i64> %4052, %4057
  store <2 x i64> %4058, ptr %4056, align 16, !tbaa !25
  %4059 = getelementptr inbounds nuw i8, ptr %4028, i64 224
  %4060 = load <2 x double>, ptr %4059, align 16, !tbaa !25
  %4061 = getelementptr inbounds nuw i8, ptr %4028, i64 1408
  %4062 = load <2 x double>, ptr %4061, align 16, !tbaa !25
  %4063 = getelementptr inbounds nuw i8, ptr %4028, i64 1424
  %4064 = load <2 x double>, ptr %4063, align 16, !tbaa !25
  %4065 = fadd <2 x double> %4062, %4064
  %4066 = fcmp ogt <2 x double> %4065, zeroinitializer
  %4067 = xor <2 x i64> %4043, splat (i64 -1)
  %4068 = and <2 x i64> %3514, %4067
  %4069 = fcmp une <2 x double> %4060, zeroinitializer
  %4070 = or <2 x i1> %4069, %4066
  %4071 = getelementptr inbounds nuw i8, ptr %4028, i64 960
  %4072 = load <2 x double>, ptr %4071, align 16, !tbaa !25
  %4073 = fmul <2 x double> %4060, splat (double 1.000000e-04)
  %4074 = fcmp ogt <2 x double> %4073, splat (double 0x3E7AD7F29ABCAF48)
  %4075 = select <2 x i1> %4074, <2 x double> %4073, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4076 = fcmp ole <2 x double> %4072, %4075
  %4077 = select <2 x i1> %4076, <2 x i1> %4070, <2 x i1> zeroinitializer
  %4078 = select <2 x i1> %4077, <2 x i64> %4068, <2 x i64> zeroinitializer
  %4079 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4078)
  %4080 = icmp eq i64 %4079, 0
  br i1 %4080, label %4314, label %4081

4081:                                             ; preds = %4024
  %4082 = load i64, ptr %131, align 8, !tbaa !20
  %4083 = load i64, ptr %132, align 16, !tbaa !21
  %4084 = getelementptr inbounds nuw i8, ptr %4028, i64 1104
  %4085 = load <2 x double>, ptr %4084, align 16, !tbaa !25
  %4086 = getelementptr inbounds nuw i8, ptr %4028, i64 1392
  %4087 = load <2 x double>, ptr %4086, align 16, !tbaa !25
  %4088 = getelementptr inbounds nuw i8, ptr %4028, i64 208
  %4089 = load <2 x double>, ptr %4088, align 16, !tbaa !25
  %4090 = getelementptr inbounds nuw i8, ptr %4028, i64 1936
  %4091 = load ptr, ptr %4090, align 16, !tbaa !46
  %4092 = add nsw i64 %4082, -1
  %4093 = getelementptr inbounds <2 x double>, ptr %4091, i64 %4092
  %4094 = load <2 x double>, ptr %4093, align 16, !tbaa !25
  %4095 = fmul <2 x double> %4089, %4094
  %4096 = fneg <2 x double> %4072
  %4097 = fdiv <2 x double> %4096, %4095
  %4098 = fcmp ogt <2 x double> %4097, splat (double 0x3E7AD7F29ABCAF48)
  %4099 = select <2 x i1> %4098, <2 x double> %4097, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4100 = load <2 x double>, ptr %4028, align 16, !tbaa !25
  %4101 = fsub <2 x double> %4100, %4099
  %4102 = getelementptr inbounds nuw i8, ptr %4028, i64 640
  %4103 = load <2 x double>, ptr %4102, align 16, !tbaa !25
  %4104 = getelementptr inbounds nuw i8, ptr %4028, i64 656
  %4105 = load <2 x double>, ptr %4104, align 16, !tbaa !25
  %4106 = getelementptr inbounds nuw i8, ptr %4028, i64 672
  %4107 = load <2 x double>, ptr %4106, align 16, !tbaa !25
  %4108 = getelementptr inbounds nuw i8, ptr %4028, i64 688
  %4109 = load <2 x double>, ptr %4108, align 16, !tbaa !25
  %4110 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4101, <2 x double> %4109, <2 x double> %4107)
  %4111 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4101, <2 x double> %4110, <2 x double> %4105)
  %4112 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4101, <2 x double> %4111, <2 x double> %4103)
  %4113 = getelementptr inbounds nuw i8, ptr %4028, i64 1904
  %4114 = load ptr, ptr %4113, align 16, !tbaa !45
  %4115 = getelementptr inbounds <2 x double>, ptr %4114, i64 %4092
  %4116 = load <2 x double>, ptr %4115, align 16, !tbaa !25
  %4117 = getelementptr inbounds nuw i8, ptr %4028, i64 1888
  %4118 = load i64, ptr %4117, align 16, !tbaa !30
  %4119 = icmp sgt i64 %4082, %4118
  br i1 %4119, label %4123, label %4120

4120:                                             ; preds = %4081
  %4121 = getelementptr inbounds nuw i8, ptr %4028, i64 160
  %4122 = load <2 x double>, ptr %4121, align 16, !tbaa !25
  br label %4134

4123:                                             ; preds = %4081
  %4124 = getelementptr inbounds nuw i8, ptr %4028, i64 96
  %4125 = load <2 x double>, ptr %4124, align 16, !tbaa !25
  %4126 = getelementptr inbounds nuw i8, ptr %4028, i64 112
  %4127 = load <2 x double>, ptr %4126, align 16, !tbaa !25
  %4128 = getelementptr inbounds nuw i8, ptr %4028, i64 128
  %4129 = load <2 x double>, ptr %4128, align 16, !tbaa !25
  %4130 = fmul <2 x double> %4116, %4129
  %4131 = fmul <2 x double> %4130, splat (double 0x3FD5555555555555)
  %4132 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4127, <2 x double> splat (double 5.000000e-01), <2 x double> %4131)
  %4133 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4116, <2 x double> %4132, <2 x double> %4125)
  br label %4134

4134:                                             ; preds = %4123, %4120
  %4135 = phi <2 x double> [ %4122, %4120 ], [ %4133, %4123 ]
  %4136 = fmul <2 x double> %4116, %4135
  %4137 = icmp sgt i64 %4082, 0
  br i1 %4137, label %4138, label %4148

4138:                                             ; preds = %4134
  %4139 = getelementptr inbounds nuw i8, ptr %4028, i64 160
  %4140 = getelementptr inbounds nuw i8, ptr %4028, i64 96
  %4141 = getelementptr inbounds nuw i8, ptr %4028, i64 112
  %4142 = getelementptr inbounds nuw i8, ptr %4028, i64 128
  %4143 = getelementptr inbounds nuw i8, ptr %4028, i64 384
  %4144 = getelementptr inbounds nuw i8, ptr %4028, i64 1984
  %4145 = icmp eq <2 x i64> %4078, zeroinitializer
  br label %4160

4146:                                             ; preds = %4239
  %4147 = load <2 x double>, ptr %4028, align 16, !tbaa !25
  br label %4148

4148:                                             ; preds = %4146, %4134
  %4149 = phi <2 x double> [ %4147, %4146 ], [ %4100, %4134 ]
  %4150 = fsub <2 x double> %4149, %4101
  %4151 = sitofp i64 %4083 to double
  %4152 = insertelement <2 x double> poison, double %4151, i64 0
  %4153 = shufflevector <2 x double> %4152, <2 x double> poison, <2 x i32> zeroinitializer
  %4154 = fdiv <2 x double> %4150, %4153
  %4155 = icmp sgt i64 %4083, 0
  br i1 %4155, label %4156, label %4270

4156:                                             ; preds = %4148
  %4157 = getelementptr inbounds nuw i8, ptr %4028, i64 2072
  %4158 = icmp eq <2 x i64> %4078, zeroinitializer
  %4159 = getelementptr inbounds nuw i8, ptr %4028, i64 2024
  br label %4247

4160:                                             ; preds = %4138, %4239
  %4161 = phi <2 x double> [ %4116, %4138 ], [ %4209, %4239 ]
  %4162 = phi <2 x double> [ %4136, %4138 ], [ %4210, %4239 ]
  %4163 = phi <2 x double> [ %4112, %4138 ], [ %4208, %4239 ]
  %4164 = phi i64 [ %4092, %4138 ], [ %4245, %4239 ]
  %4165 = icmp eq i64 %4164, 0
  br i1 %4165, label %4207, label %4166

4166:                                             ; preds = %4160
  %4167 = load ptr, ptr %4113, align 16, !tbaa !45
  %4168 = getelementptr <2 x double>, ptr %4167, i64 %4164
  %4169 = getelementptr i8, ptr %4168, i64 -16
  %4170 = load <2 x double>, ptr %4169, align 16, !tbaa !25
  %4171 = load i64, ptr %4117, align 16, !tbaa !30
  %4172 = icmp sgt i64 %4164, %4171
  br i1 %4172, label %4175, label %4173

4173:                                             ; preds = %4166
  %4174 = load <2 x double>, ptr %4139, align 16, !tbaa !25
  br label %4183

4175:                                             ; preds = %4166
  %4176 = load <2 x double>, ptr %4140, align 16, !tbaa !25
  %4177 = load <2 x double>, ptr %4141, align 16, !tbaa !25
  %4178 = load <2 x double>, ptr %4142, align 16, !tbaa !25
  %4179 = fmul <2 x double> %4170, %4178
  %4180 = fmul <2 x double> %4179, splat (double 0x3FD5555555555555)
  %4181 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4177, <2 x double> splat (double 5.000000e-01), <2 x double> %4180)
  %4182 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4170, <2 x double> %4181, <2 x double> %4176)
  br label %4183

4183:                                             ; preds = %4173, %4175
  %4184 = phi <2 x double> [ %4182, %4175 ], [ %4174, %4173 ]
  %4185 = fmul <2 x double> %4170, %4184
  %4186 = icmp slt i64 %4164, %4171
  br i1 %4186, label %4187, label %4194

4187:                                             ; preds = %4183
  %4188 = load ptr, ptr %4144, align 16, !tbaa !66
  %4189 = getelementptr inbounds nuw <2 x double>, ptr %4188, i64 %4164
  %4190 = load <2 x double>, ptr %4189, align 16, !tbaa !25
  %4191 = load <2 x double>, ptr %4143, align 16, !tbaa !25
  %4192 = fmul <2 x double> %4190, %4191
  %4193 = fmul <2 x double> %4190, %4191
  br label %4203

4194:                                             ; preds = %4183
  %4195 = load <2 x double>, ptr %4143, align 16, !tbaa !25
  %4196 = load ptr, ptr %4144, align 16, !tbaa !66
  %4197 = getelementptr inbounds nuw <2 x double>, ptr %4196, i64 %4164
  %4198 = load <2 x double>, ptr %4197, align 16, !tbaa !25
  %4199 = fsub <2 x double> %4112, %4195
  %4200 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4198, <2 x double> %4199, <2 x double> %4195)
  %4201 = fsub <2 x double> %4085, %4195
  %4202 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4198, <2 x double> %4201, <2 x double> %4195)
  br label %4203

4203:                                             ; preds = %4194, %4187
  %4204 = phi <2 x double> [ %4192, %4187 ], [ %4200, %4194 ]
  %4205 = phi <2 x double> [ %4193, %4187 ], [ %4202, %4194 ]
  %4206 = fsub <2 x double> %4205, %4204
  br label %4207

4207:                                             ; preds = %4160, %4203
  %4208 = phi <2 x double> [ %4204, %4203 ], [ zeroinitializer, %4160 ]
  %4209 = phi <2 x double> [ %4170, %4203 ], [ %4161, %4160 ]
  %4210 = phi <2 x double> [ %4185, %4203 ], [ %4162, %4160 ]
  %4211 = phi <2 x double> [ %4206, %4203 ], [ zeroinitializer, %4160 ]
  %4212 = fsub <2 x double> %4163, %4208
  %4213 = fdiv <2 x double> %4211, %4212
  %4214 = fsub <2 x double> %4210, %4162
  %4215 = fmul <2 x double> %4214, %4213
  %4216 = load ptr, ptr %4090, align 16, !tbaa !46
  %4217 = getelementptr inbounds nuw <2 x double>, ptr %4216, i64 %4164
  %4218 = load <2 x double>, ptr %4217, align 16, !tbaa !25
  br i1 %4165, label %4222, label %4219

4219:                                             ; preds = %4207
  %4220 = getelementptr i8, ptr %4217, i64 -16
  %4221 = load <2 x double>, ptr %4220, align 16, !tbaa !25
  br label %4222

4222:                                             ; preds = %4219, %4207
  %4223 = phi <2 x double> [ %4221, %4219 ], [ %4218, %4207 ]
  %4224 = fsub <2 x double> %4223, %4218
  %4225 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4224, <2 x double> %4213, <2 x double> %4218)
  %4226 = select <2 x i1> %4145, <2 x double> %4218, <2 x double> %4225
  store <2 x double> %4226, ptr %4217, align 16, !tbaa !25
  %4227 = load ptr, ptr %4113, align 16, !tbaa !45
  %4228 = getelementptr inbounds nuw <2 x double>, ptr %4227, i64 %4164
  %4229 = load i64, ptr %4117, align 16, !tbaa !30
  %4230 = icmp slt i64 %4164, %4229
  br i1 %4230, label %4231, label %4233

4231:                                             ; preds = %4222
  %4232 = load <2 x double>, ptr %4139, align 16, !tbaa !25
  br label %4239

4233:                                             ; preds = %4222
  %4234 = load <2 x double>, ptr %4140, align 16, !tbaa !25
  %4235 = load <2 x double>, ptr %4141, align 16, !tbaa !25
  %4236 = load <2 x double>, ptr %4142, align 16, !tbaa !25
  %4237 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4161, <2 x double> %4236, <2 x double> %4235)
  %4238 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4161, <2 x double> %4237, <2 x double> %4234)
  br label %4239

4239:                                             ; preds = %4233, %4231
  %4240 = phi <2 x double> [ %4232, %4231 ], [ %4238, %4233 ]
  %4241 = fdiv <2 x double> %4215, %4240
  %4242 = fadd <2 x double> %4161, %4241
  %4243 = load <2 x double>, ptr %4228, align 16, !tbaa !25
  %4244 = select <2 x i1> %4145, <2 x double> %4243, <2 x double> %4242
  store <2 x double> %4244, ptr %4228, align 16, !tbaa !25
  %4245 = add nsw i64 %4164, -1
  %4246 = icmp sgt i64 %4164, 0
  br i1 %4246, label %4160, label %4146, !llvm.loop !127

4247:                                             ; preds = %4156, %4247
  %4248 = phi i64 [ 0, %4156 ], [ %4268, %4247 ]
  %4249 = load ptr, ptr %4157, align 8, !tbaa !48
  %4250 = getelementptr inbounds nuw <2 x double>, ptr %4249, i64 %4248
  %4251 = uitofp nneg i64 %4248 to double
  %4252 = insertelement <2 x double> poison, double %4251, i64 0
  %4253 = shufflevector <2 x double> %4252, <2 x double> poison, <2 x i32> zeroinitializer
  %4254 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4253, <2 x double> %4154, <2 x double> %4101)
  %4255 = load <2 x double>, ptr %4102, align 16, !tbaa !25
  %4256 = load <2 x double>, ptr %4104, align 16, !tbaa !25
  %4257 = load <2 x double>, ptr %4106, align 16, !tbaa !25
  %4258 = load <2 x double>, ptr %4108, align 16, !tbaa !25
  %4259 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4254, <2 x double> %4258, <2 x double> %4257)
  %4260 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4254, <2 x double> %4259, <2 x double> %4256)
  %4261 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4254, <2 x double> %4260, <2 x double> %4255)
  %4262 = load <2 x double>, ptr %4250, align 16, !tbaa !25
  %4263 = select <2 x i1> %4158, <2 x double> %4262, <2 x double> %4261
  store <2 x double> %4263, ptr %4250, align 16, !tbaa !25
  %4264 = load ptr, ptr %4159, align 8, !tbaa !49
  %4265 = getelementptr inbounds nuw <2 x double>, ptr %4264, i64 %4248
  %4266 = load <2 x double>, ptr %4265, align 16, !tbaa !25
  %4267 = select <2 x i1> %4158, <2 x double> %4266, <2 x double> %4087
  store <2 x double> %4267, ptr %4265, align 16, !tbaa !25
  %4268 = add nuw nsw i64 %4248, 1
  %4269 = icmp eq i64 %4268, %4083
  br i1 %4269, label %4270, label %4247, !llvm.loop !128

4270:                                             ; preds = %4247, %4148
  %4271 = fsub <2 x double> %4085, %4112
  %4272 = getelementptr inbounds nuw i8, ptr %4028, i64 928
  %4273 = getelementptr inbounds nuw i8, ptr %4028, i64 2072
  %4274 = load ptr, ptr %4273, align 8, !tbaa !48
  %4275 = getelementptr inbounds <2 x double>, ptr %4274, i64 %4083
  %4276 = getelementptr inbounds nuw i8, ptr %4028, i64 352
  %4277 = load <2 x double>, ptr %4276, align 16, !tbaa !25
  %4278 = load <2 x double>, ptr %4275, align 16, !tbaa !25
  %4279 = icmp eq <2 x i64> %4078, zeroinitializer
  %4280 = select <2 x i1> %4279, <2 x double> %4278, <2 x double> %4277
  store <2 x double> %4280, ptr %4275, align 16, !tbaa !25
  %4281 = load <2 x double>, ptr %4272, align 16, !tbaa !25
  %4282 = select <2 x i1> %4279, <2 x double> %4281, <2 x double> %4101
  store <2 x double> %4282, ptr %4272, align 16, !tbaa !25
  %4283 = load <2 x double>, ptr %4029, align 16, !tbaa !25
  %4284 = select <2 x i1> %4279, <2 x double> %4283, <2 x double> %4112
  store <2 x double> %4284, ptr %4029, align 16, !tbaa !25
  %4285 = load <2 x double>, ptr %4084, align 16, !tbaa !25
  %4286 = select <2 x i1> %4279, <2 x double> %4285, <2 x double> %4112
  store <2 x double> %4286, ptr %4084, align 16, !tbaa !25
  %4287 = getelementptr inbounds nuw i8, ptr %4028, i64 976
  %4288 = load <2 x double>, ptr %4287, align 16, !tbaa !25
  %4289 = fneg <2 x double> %4271
  %4290 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4289, <2 x double> %4095, <2 x double> %4288)
  %4291 = select <2 x i1> %4279, <2 x double> %4288, <2 x double> %4290
  store <2 x double> %4291, ptr %4287, align 16, !tbaa !25
  %4292 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4271, <2 x double> %4095, <2 x double> %4072)
  %4293 = load <2 x double>, ptr %4071, align 16, !tbaa !25
  %4294 = select <2 x i1> %4279, <2 x double> %4293, <2 x double> %4292
  store <2 x double> %4294, ptr %4071, align 16, !tbaa !25
  %4295 = getelementptr inbounds nuw i8, ptr %4028, i64 1040
  %4296 = load <2 x double>, ptr %4295, align 16, !tbaa !25
  %4297 = getelementptr inbounds nuw i8, ptr %4028, i64 192
  %4298 = load <2 x double>, ptr %4297, align 16, !tbaa !25
  %4299 = fneg <2 x double> %4298
  %4300 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4299, <2 x double> %4087, <2 x double> %4136)
  %4301 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4271, <2 x double> %4300, <2 x double> %4296)
  %4302 = select <2 x i1> %4279, <2 x double> %4296, <2 x double> %4301
  store <2 x double> %4302, ptr %4295, align 16, !tbaa !25
  %4303 = load <2 x i64>, ptr %4042, align 16, !tbaa !25
  %4304 = or <2 x i64> %4303, %4078
  store <2 x i64> %4304, ptr %4042, align 16, !tbaa !25
  %4305 = load <2 x i64>, ptr %4056, align 16, !tbaa !25
  %4306 = or <2 x i64> %4305, %4078
  store <2 x i64> %4306, ptr %4056, align 16, !tbaa !25
  %4307 = load <2 x double>, ptr %219, align 16, !tbaa !25
  %4308 = fmul <2 x double> %4307, splat (double 5.000000e+00)
  %4309 = fcmp olt <2 x double> %4026, %4308
  %4310 = select <2 x i1> %4309, <2 x double> %4026, <2 x double> %4308
  %4311 = icmp ne <2 x i64> %4078, zeroinitializer
  %4312 = select <2 x i1> %4069, <2 x i1> %4311, <2 x i1> zeroinitializer
  %4313 = select <2 x i1> %4312, <2 x double> %4310, <2 x double> %4026
  br label %4314

4314:                                             ; preds = %4270, %4024
  %4315 = phi <2 x double> [ %4313, %4270 ], [ %4026, %4024 ]
  %4316 = add nuw nsw i64 %4025, 1
  %4317 = load i64, ptr %140, align 16, !tbaa !16
  %4318 = icmp slt i64 %4316, %4317
  br i1 %4318, label %4024, label %4319, !llvm.loop !129

4319:                                             ; preds = %4314
  %4320 = load <2 x double>, ptr %148, align 16, !tbaa !25
  br label %4321

4321:                                             ; preds = %4319, %3987
  %4322 = phi <2 x double> [ %3996, %3987 ], [ %4320, %4319 ]
  %4323 = phi <2 x double> [ %4019, %3987 ], [ %4315, %4319 ]
  %4324 = load <2 x double>, ptr %151, align 16, !tbaa !25
  %4325 = select <2 x i1> %3574, <2 x double> %4324, <2 x double> %4323
  store <2 x double> %4325, ptr %151, align 16, !tbaa !25
  %4326 = load ptr, ptr %220, align 16, !tbaa !37
  %4327 = getelementptr inbounds nuw i8, ptr %4326, i64 16
  store <2 x double> %4322, ptr %4326, align 16, !tbaa !25
  %4328 = load <2 x double>, ptr %221, align 16, !tbaa !25
  %4329 = getelementptr inbounds nuw i8, ptr %4326, i64 32
  store <2 x double> %4328, ptr %4327, align 16, !tbaa !25
  %4330 = load <2 x double>, ptr %189, align 16, !tbaa !25
  %4331 = getelementptr inbounds nuw i8, ptr %4326, i64 48
  store <2 x double> %4330, ptr %4329, align 16, !tbaa !25
  %4332 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %4333 = getelementptr inbounds nuw i8, ptr %4326, i64 64
  store <2 x double> %4332, ptr %4331, align 16, !tbaa !25
  %4334 = load i64, ptr %140, align 16, !tbaa !16
  %4335 = icmp sgt i64 %4334, 0
  br i1 %4335, label %4340, label %4336

4336:                                             ; preds = %4340, %4321
  %4337 = phi ptr [ %4333, %4321 ], [ %4346, %4340 ]
  %4338 = load i64, ptr %222, align 8, !tbaa !130
  %4339 = icmp eq i64 %4338, 0
  br i1 %4339, label %4475, label %4350

4340:                                             ; preds = %4321, %4340
  %4341 = phi ptr [ %4346, %4340 ], [ %4333, %4321 ]
  %4342 = phi i64 [ %4347, %4340 ], [ 0, %4321 ]
  %4343 = load ptr, ptr %141, align 8, !tbaa !27
  %4344 = getelementptr inbounds nuw %struct.Piece, ptr %4343, i64 %4342, i32 35
  %4345 = load <2 x double>, ptr %4344, align 16, !tbaa !25
  %4346 = getelementptr inbounds nuw i8, ptr %4341, i64 16
  store <2 x double> %4345, ptr %4341, align 16, !tbaa !25
  %4347 = add nuw nsw i64 %4342, 1
  %4348 = load i64, ptr %140, align 16, !tbaa !16
  %4349 = icmp slt i64 %4347, %4348
  br i1 %4349, label %4340, label %4336, !llvm.loop !131

4350:                                             ; preds = %4336
  %4351 = load <2 x double>, ptr %204, align 16, !tbaa !25
  %4352 = getelementptr inbounds nuw i8, ptr %4337, i64 16
  store <2 x double> %4351, ptr %4337, align 16, !tbaa !25
  %4353 = load <2 x double>, ptr %182, align 16, !tbaa !25
  %4354 = getelementptr inbounds nuw i8, ptr %4337, i64 32
  store <2 x double> %4353, ptr %4352, align 16, !tbaa !25
  %4355 = load <2 x double>, ptr %189, align 16, !tbaa !25
  %4356 = load <2 x double>, ptr %199, align 16, !tbaa !25
  %4357 = fsub <2 x double> %4355, %4356
  %4358 = fcmp ogt <2 x double> %4357, zeroinitializer
  %4359 = select <2 x i1> %4358, <2 x double> %4357, <2 x double> zeroinitializer
  store <2 x double> %4359, ptr %4354, align 16, !tbaa !25
  %4360 = load i64, ptr %140, align 16, !tbaa !16
  %4361 = icmp sgt i64 %4360, 0
  br i1 %4361, label %4362, label %4475

4362:                                             ; preds = %4350
  %4363 = getelementptr inbounds nuw i8, ptr %4337, i64 48
  br label %4364

4364:                                             ; preds = %4362, %4364
  %4365 = phi ptr [ %4471, %4364 ], [ %4363, %4362 ]
  %4366 = phi i64 [ %4472, %4364 ], [ 0, %4362 ]
  %4367 = load ptr, ptr %141, align 8, !tbaa !27
  %4368 = getelementptr inbounds nuw %struct.Piece, ptr %4367, i64 %4366
  %4369 = getelementptr inbounds nuw i8, ptr %4368, i64 1904
  %4370 = load ptr, ptr %4369, align 16, !tbaa !45
  %4371 = load i64, ptr %131, align 8, !tbaa !20
  %4372 = getelementptr <2 x double>, ptr %4370, i64 %4371
  %4373 = getelementptr i8, ptr %4372, i64 -16
  %4374 = load <2 x double>, ptr %4373, align 16, !tbaa !25
  %4375 = getelementptr inbounds nuw i8, ptr %4368, i64 1712
  %4376 = load <2 x double>, ptr %4375, align 16, !tbaa !25
  %4377 = getelementptr inbounds nuw i8, ptr %4368, i64 1392
  %4378 = load <2 x double>, ptr %4377, align 16, !tbaa !25
  %4379 = fsub <2 x double> %4378, %4374
  %4380 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4376, <2 x double> %4379, <2 x double> %4374)
  %4381 = getelementptr inbounds nuw i8, ptr %4365, i64 16
  store <2 x double> %4380, ptr %4365, align 16, !tbaa !25
  %4382 = getelementptr inbounds nuw i8, ptr %4368, i64 1600
  %4383 = load <2 x double>, ptr %4382, align 16, !tbaa !25
  %4384 = getelementptr inbounds nuw i8, ptr %4365, i64 32
  store <2 x double> %4383, ptr %4381, align 16, !tbaa !25
  %4385 = load <2 x double>, ptr %4368, align 16, !tbaa !25
  %4386 = getelementptr inbounds nuw i8, ptr %4368, i64 928
  %4387 = load <2 x double>, ptr %4386, align 16, !tbaa !25
  %4388 = fsub <2 x double> %4385, %4387
  %4389 = getelementptr inbounds nuw i8, ptr %4365, i64 48
  store <2 x double> %4388, ptr %4384, align 16, !tbaa !25
  %4390 = getelementptr inbounds nuw i8, ptr %4368, i64 1008
  %4391 = load <2 x double>, ptr %4390, align 16, !tbaa !25
  %4392 = getelementptr inbounds nuw i8, ptr %4365, i64 64
  store <2 x double> %4391, ptr %4389, align 16, !tbaa !25
  %4393 = getelementptr inbounds nuw i8, ptr %4368, i64 992
  %4394 = load <2 x double>, ptr %4393, align 16, !tbaa !25
  %4395 = getelementptr inbounds nuw i8, ptr %4365, i64 80
  store <2 x double> %4394, ptr %4392, align 16, !tbaa !25
  %4396 = getelementptr inbounds nuw i8, ptr %4368, i64 960
  %4397 = load <2 x double>, ptr %4396, align 16, !tbaa !25
  %4398 = getelementptr inbounds nuw i8, ptr %4365, i64 96
  store <2 x double> %4397, ptr %4395, align 16, !tbaa !25
  %4399 = getelementptr inbounds nuw i8, ptr %4368, i64 1024
  %4400 = load <2 x double>, ptr %4399, align 16, !tbaa !25
  %4401 = getelementptr inbounds nuw i8, ptr %4365, i64 112
  store <2 x double> %4400, ptr %4398, align 16, !tbaa !25
  %4402 = getelementptr inbounds nuw i8, ptr %4368, i64 2024
  %4403 = load i64, ptr %132, align 16, !tbaa !21
  %4404 = sitofp i64 %4403 to double
  %4405 = tail call double @llvm.fmuladd.f64(double %4404, double 7.500000e-01, double -5.000000e-01)
  %4406 = fcmp ogt double %4405, 0.000000e+00
  %4407 = select i1 %4406, double %4405, double 0.000000e+00
  %4408 = fptosi double %4407 to i64
  %4409 = add nsw i64 %4403, -2
  %4410 = tail call i64 @llvm.smin.i64(i64 %4409, i64 %4408)
  %4411 = sitofp i64 %4410 to double
  %4412 = fsub double %4405, %4411
  %4413 = fsub double 1.000000e+00, %4412
  %4414 = insertelement <2 x double> poison, double %4413, i64 0
  %4415 = shufflevector <2 x double> %4414, <2 x double> poison, <2 x i32> zeroinitializer
  %4416 = load ptr, ptr %4402, align 8, !tbaa !49
  %4417 = getelementptr inbounds <2 x double>, ptr %4416, i64 %4410
  %4418 = load <2 x double>, ptr %4417, align 16, !tbaa !25
  %4419 = insertelement <2 x double> poison, double %4412, i64 0
  %4420 = shufflevector <2 x double> %4419, <2 x double> poison, <2 x i32> zeroinitializer
  %4421 = getelementptr i8, ptr %4417, i64 16
  %4422 = load <2 x double>, ptr %4421, align 16, !tbaa !25
  %4423 = fmul <2 x double> %4422, %4420
  %4424 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4415, <2 x double> %4418, <2 x double> %4423)
  store <2 x double> %4424, ptr %4401, align 16, !tbaa !25
  %4425 = load i64, ptr %132, align 16, !tbaa !21
  %4426 = sitofp i64 %4425 to double
  %4427 = tail call double @llvm.fmuladd.f64(double %4426, double 5.000000e-01, double -5.000000e-01)
  %4428 = fcmp ogt double %4427, 0.000000e+00
  %4429 = select i1 %4428, double %4427, double 0.000000e+00
  %4430 = fptosi double %4429 to i64
  %4431 = add nsw i64 %4425, -2
  %4432 = tail call i64 @llvm.smin.i64(i64 %4431, i64 %4430)
  %4433 = sitofp i64 %4432 to double
  %4434 = fsub double %4427, %4433
  %4435 = fsub double 1.000000e+00, %4434
  %4436 = insertelement <2 x double> poison, double %4435, i64 0
  %4437 = shufflevector <2 x double> %4436, <2 x double> poison, <2 x i32> zeroinitializer
  %4438 = load ptr, ptr %4402, align 8, !tbaa !49
  %4439 = getelementptr inbounds <2 x double>, ptr %4438, i64 %4432
  %4440 = load <2 x double>, ptr %4439, align 16, !tbaa !25
  %4441 = insertelement <2 x double> poison, double %4434, i64 0
  %4442 = shufflevector <2 x double> %4441, <2 x double> poison, <2 x i32> zeroinitializer
  %4443 = getelementptr i8, ptr %4439, i64 16
  %4444 = load <2 x double>, ptr %4443, align 16, !tbaa !25
  %4445 = fmul <2 x double> %4444, %4442
  %4446 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4437, <2 x double> %4440, <2 x double> %4445)
  %4447 = getelementptr inbounds nuw i8, ptr %4365, i64 128
  store <2 x double> %4446, ptr %4447, align 16, !tbaa !25
  %4448 = load i64, ptr %132, align 16, !tbaa !21
  %4449 = sitofp i64 %4448 to double
  %4450 = tail call double @llvm.fmuladd.f64(double %4449, double 2.500000e-01, double -5.000000e-01)
  %4451 = fcmp ogt double %4450, 0.000000e+00
  %4452 = select i1 %4451, double %4450, double 0.000000e+00
  %4453 = fptosi double %4452 to i64
  %4454 = add nsw i64 %4448, -2
  %4455 = tail call i64 @llvm.smin.i64(i64 %4454, i64 %4453)
  %4456 = sitofp i64 %4455 to double
  %4457 = fsub double %4450, %4456
  %4458 = fsub double 1.000000e+00, %4457
  %4459 = insertelement <2 x double> poison, double %4458, i64 0
  %4460 = shufflevector <2 x double> %4459, <2 x double> poison, <2 x i32> zeroinitializer
  %4461 = load ptr, ptr %4402, align 8, !tbaa !49
  %4462 = getelementptr inbounds <2 x double>, ptr %4461, i64 %4455
  %4463 = load <2 x double>, ptr %4462, align 16, !tbaa !25
  %4464 = insertelement <2 x double> poison, double %4457, i64 0
  %4465 = shufflevector <2 x double> %4464, <2 x double> poison, <2 x i32> zeroinitializer
  %4466 = getelementptr i8, ptr %4462, i64 16
  %4467 = load <2 x double>, ptr %4466, align 16, !tbaa !25
  %4468 = fmul <2 x double> %4467, %4465
  %4469 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4460, <2 x double> %4463, <2 x double> %4468)
  %4470 = getelementptr inbounds nuw i8, ptr %4365, i64 144
  store <2 x double> %4469, ptr %4470, align 16, !tbaa !25
  %4471 = getelementptr inbounds nuw i8, ptr %4365, i64 160
  %4472 = add nuw nsw i64 %4366, 1
  %4473 = load i64, ptr %140, align 16, !tbaa !16
  %4474 = icmp slt i64 %4472, %4473
  br i1 %4474, label %4364, label %4475, !llvm.loop !132

4475:                                             ; preds = %4364, %4350, %4336
  %4476 = extractelement <2 x i64> %3514, i64 0
  %4477 = icmp eq i64 %4476, 0
  br i1 %4477, label %4544, label %4478

4478:                                             ; preds = %4475
  %4479 = load i64, ptr %223, align 8, !tbaa !29
  %4480 = load i64, ptr %224, align 8, !tbaa !133
  %4481 = icmp eq i64 %4479, %4480
  br i1 %4481, label %4484, label %4482

4482:                                             ; preds = %4478
  %4483 = load ptr, ptr %228, align 8, !tbaa !134
  br label %4497

4484:                                             ; preds = %4478
  %4485 = load i64, ptr %133, align 8, !tbaa !29
  %4486 = load ptr, ptr %225, align 8, !tbaa !135
  %4487 = load i64, ptr %124, align 8, !tbaa !40
  %4488 = getelementptr inbounds i64, ptr %4486, i64 %4487
  store i64 %4485, ptr %4488, align 8, !tbaa !29
  %4489 = load ptr, ptr %226, align 8, !tbaa !136
  %4490 = load i64, ptr %124, align 8, !tbaa !40
  %4491 = add nsw i64 %4490, 1
  store i64 %4491, ptr %124, align 8, !tbaa !40
  %4492 = load i64, ptr %224, align 8, !tbaa !133
  %4493 = mul nsw i64 %4492, %4490
  %4494 = load i64, ptr %227, align 8, !tbaa !15
  %4495 = mul nsw i64 %4493, %4494
  %4496 = getelementptr inbounds double, ptr %4489, i64 %4495
  store ptr %4496, ptr %228, align 8, !tbaa !134
  br label %4497

4497:                                             ; preds = %4482, %4484
  %4498 = phi i64 [ %4479, %4482 ], [ 0, %4484 ]
  %4499 = phi ptr [ %4483, %4482 ], [ %4496, %4484 ]
  %4500 = add nsw i64 %4498, 1
  store i64 %4500, ptr %223, align 8, !tbaa !29
  %4501 = load i64, ptr %227, align 8, !tbaa !15
  %4502 = mul nsw i64 %4501, %4498
  %4503 = getelementptr inbounds double, ptr %4499, i64 %4502
  %4504 = icmp sgt i64 %4501, 0
  br i1 %4504, label %4505, label %4544

4505:                                             ; preds = %4497
  %4506 = load ptr, ptr %220, align 16, !tbaa !37
  %4507 = and i64 %4501, 3
  %4508 = icmp ult i64 %4501, 4
  br i1 %4508, label %4532, label %4509

4509:                                             ; preds = %4505
  %4510 = and i64 %4501, 9223372036854775804
  br label %4511

4511:                                             ; preds = %4511, %4509
  %4512 = phi i64 [ 0, %4509 ], [ %4529, %4511 ]
  %4513 = phi i64 [ 0, %4509 ], [ %4530, %4511 ]
  %4514 = getelementptr inbounds nuw <2 x double>, ptr %4506, i64 %4512
  %4515 = load double, ptr %4514, align 8, !tbaa !41
  %4516 = getelementptr inbounds nuw double, ptr %4503, i64 %4512
  store double %4515, ptr %4516, align 8, !tbaa !41
  %4517 = or disjoint i64 %4512, 1
  %4518 = getelementptr inbounds nuw <2 x double>, ptr %4506, i64 %4517
  %4519 = load double, ptr %4518, align 8, !tbaa !41
  %4520 = getelementptr inbounds nuw double, ptr %4503, i64 %4517
  store double %4519, ptr %4520, align 8, !tbaa !41
  %4521 = or disjoint i64 %4512, 2
  %4522 = getelementptr inbounds nuw <2 x double>, ptr %4506, i64 %4521
  %4523 = load double, ptr %4522, align 8, !tbaa !41
  %4524 = getelementptr inbounds nuw double, ptr %4503, i64 %4521
  store double %4523, ptr %4524, align 8, !tbaa !41
  %4525 = or disjoint i64 %4512, 3
  %4526 = getelementptr inbounds nuw <2 x double>, ptr %4506, i64 %4525
  %4527 = load double, ptr %4526, align 8, !tbaa !41
  %4528 = getelementptr inbounds nuw double, ptr %4503, i64 %4525
  store double %4527, ptr %4528, align 8, !tbaa !41
  %4529 = add nuw nsw i64 %4512, 4
  %4530 = add i64 %4513, 4
  %4531 = icmp eq i64 %4530, %4510
  br i1 %4531, label %4532, label %4511, !llvm.loop !137

4532:                                             ; preds = %4511, %4505
  %4533 = phi i64 [ 0, %4505 ], [ %4529, %4511 ]
  %4534 = icmp eq i64 %4507, 0
  br i1 %4534, label %4544, label %4535

4535:                                             ; preds = %4532, %4535
  %4536 = phi i64 [ %4541, %4535 ], [ %4533, %4532 ]
  %4537 = phi i64 [ %4542, %4535 ], [ 0, %4532 ]
  %4538 = getelementptr inbounds nuw <2 x double>, ptr %4506, i64 %4536
  %4539 = load double, ptr %4538, align 8, !tbaa !41
  %4540 = getelementptr inbounds nuw double, ptr %4503, i64 %4536
  store double %4539, ptr %4540, align 8, !tbaa !41
  %4541 = add nuw nsw i64 %4536, 1
  %4542 = add i64 %4537, 1
  %4543 = icmp eq i64 %4542, %4507
  br i1 %4543, label %4544, label %4535, !llvm.loop !138

4544:                                             ; preds = %4532, %4535, %4497, %4475
  %4545 = extractelement <2 x i64> %3514, i64 1
  %4546 = icmp eq i64 %4545, 0
  br i1 %4546, label %4614, label %4547

4547:                                             ; preds = %4544
  %4548 = load i64, ptr %259, align 8, !tbaa !29
  %4549 = load i64, ptr %224, align 8, !tbaa !133
  %4550 = icmp eq i64 %4548, %4549
  br i1 %4550, label %4553, label %4551

4551:                                             ; preds = %4547
  %4552 = load ptr, ptr %260, align 8, !tbaa !134
  br label %4566

4553:                                             ; preds = %4547
  %4554 = load i64, ptr %261, align 8, !tbaa !29
  %4555 = load ptr, ptr %225, align 8, !tbaa !135
  %4556 = load i64, ptr %124, align 8, !tbaa !40
  %4557 = getelementptr inbounds i64, ptr %4555, i64 %4556
  store i64 %4554, ptr %4557, align 8, !tbaa !29
  %4558 = load ptr, ptr %226, align 8, !tbaa !136
  %4559 = load i64, ptr %124, align 8, !tbaa !40
  %4560 = add nsw i64 %4559, 1
  store i64 %4560, ptr %124, align 8, !tbaa !40
  %4561 = load i64, ptr %224, align 8, !tbaa !133
  %4562 = mul nsw i64 %4561, %4559
  %4563 = load i64, ptr %227, align 8, !tbaa !15
  %4564 = mul nsw i64 %4562, %4563
  %4565 = getelementptr inbounds double, ptr %4558, i64 %4564
  store ptr %4565, ptr %262, align 8, !tbaa !134
  br label %4566

4566:                                             ; preds = %4551, %4553
  %4567 = phi i64 [ %4548, %4551 ], [ 0, %4553 ]
  %4568 = phi ptr [ %4552, %4551 ], [ %4565, %4553 ]
  %4569 = add nsw i64 %4567, 1
  store i64 %4569, ptr %259, align 8, !tbaa !29
  %4570 = load i64, ptr %227, align 8, !tbaa !15
  %4571 = mul nsw i64 %4570, %4567
  %4572 = getelementptr inbounds double, ptr %4568, i64 %4571
  %4573 = icmp sgt i64 %4570, 0
  br i1 %4573, label %4574, label %4614

4574:                                             ; preds = %4566
  %4575 = load ptr, ptr %220, align 16, !tbaa !37
  %4576 = getelementptr inbounds nuw i8, ptr %4575, i64 8
  %4577 = and i64 %4570, 3
  %4578 = icmp ult i64 %4570, 4
  br i1 %4578, label %4602, label %4579

4579:                                             ; preds = %4574
  %4580 = and i64 %4570, 9223372036854775804
  br label %4581

4581:                                             ; preds = %4581, %4579
  %4582 = phi i64 [ 0, %4579 ], [ %4599, %4581 ]
  %4583 = phi i64 [ 0, %4579 ], [ %4600, %4581 ]
  %4584 = getelementptr inbounds nuw <2 x double>, ptr %4576, i64 %4582
  %4585 = load double, ptr %4584, align 8, !tbaa !41
  %4586 = getelementptr inbounds nuw double, ptr %4572, i64 %4582
  store double %4585, ptr %4586, align 8, !tbaa !41
  %4587 = or disjoint i64 %4582, 1
  %4588 = getelementptr inbounds nuw <2 x double>, ptr %4576, i64 %4587
  %4589 = load double, ptr %4588, align 8, !tbaa !41
  %4590 = getelementptr inbounds nuw double, ptr %4572, i64 %4587
  store double %4589, ptr %4590, align 8, !tbaa !41
  %4591 = or disjoint i64 %4582, 2
  %4592 = getelementptr inbounds nuw <2 x double>, ptr %4576, i64 %4591
  %4593 = load double, ptr %4592, align 8, !tbaa !41
  %4594 = getelementptr inbounds nuw double, ptr %4572, i64 %4591
  store double %4593, ptr %4594, align 8, !tbaa !41
  %4595 = or disjoint i64 %4582, 3
  %4596 = getelementptr inbounds nuw <2 x double>, ptr %4576, i64 %4595
  %4597 = load double, ptr %4596, align 8, !tbaa !41
  %4598 = getelementptr inbounds nuw double, ptr %4572, i64 %4595
  store double %4597, ptr %4598, align 8, !tbaa !41
  %4599 = add nuw nsw i64 %4582, 4
  %4600 = add i64 %4583, 4
  %4601 = icmp eq i64 %4600, %4580
  br i1 %4601, label %4602, label %4581, !llvm.loop !137

4602:                                             ; preds = %4581, %4574
  %4603 = phi i64 [ 0, %4574 ], [ %4599, %4581 ]
  %4604 = icmp eq i64 %4577, 0
  br i1 %4604, label %4614, label %4605

4605:                                             ; preds = %4602, %4605
  %4606 = phi i64 [ %4611, %4605 ], [ %4603, %4602 ]
  %4607 = phi i64 [ %4612, %4605 ], [ 0, %4602 ]
  %4608 = getelementptr inbounds nuw <2 x double>, ptr %4576, i64 %4606
  %4609 = load double, ptr %4608, align 8, !tbaa !41
  %4610 = getelementptr inbounds nuw double, ptr %4572, i64 %4606
  store double %4609, ptr %4610, align 8, !tbaa !41
  %4611 = add nuw nsw i64 %4606, 1
  %4612 = add i64 %4607, 1
  %4613 = icmp eq i64 %4612, %4577
  br i1 %4613, label %4614, label %4605, !llvm.loop !139

4614:                                             ; preds = %4602, %4605, %4566, %4544
  %4615 = load <2 x double>, ptr %148, align 16, !tbaa !25
  %4616 = load <2 x double>, ptr %153, align 16, !tbaa !25
  %4617 = fsub <2 x double> %4615, %4616
  %4618 = load <2 x double>, ptr %154, align 16, !tbaa !25
  %4619 = fadd <2 x double> %4618, splat (double -1.000000e-09)
  %4620 = fcmp oge <2 x double> %4617, %4619
  %4621 = select <2 x i1> %4620, <2 x i64> %3514, <2 x i64> zeroinitializer
  %4622 = load i64, ptr %140, align 16, !tbaa !16
  %4623 = icmp sgt i64 %4622, 0
  br i1 %4623, label %4624, label %4672

4624:                                             ; preds = %4614
  %4625 = load ptr, ptr %141, align 8, !tbaa !27
  %4626 = and i64 %4622, 3
  %4627 = icmp ult i64 %4622, 4
  br i1 %4627, label %4656, label %4628

4628:                                             ; preds = %4624
  %4629 = and i64 %4622, 9223372036854775804
  br label %4630

4630:                                             ; preds = %4630, %4628
  %4631 = phi i64 [ 0, %4628 ], [ %4653, %4630 ]
  %4632 = phi <2 x double> [ splat (double 1.000000e+09), %4628 ], [ %4652, %4630 ]
  %4633 = phi i64 [ 0, %4628 ], [ %4654, %4630 ]
  %4634 = getelementptr inbounds nuw %struct.Piece, ptr %4625, i64 %4631, i32 35
  %4635 = load <2 x double>, ptr %4634, align 16, !tbaa !25
  %4636 = fcmp olt <2 x double> %4632, %4635
  %4637 = select <2 x i1> %4636, <2 x double> %4632, <2 x double> %4635
  %4638 = or disjoint i64 %4631, 1
  %4639 = getelementptr inbounds nuw %struct.Piece, ptr %4625, i64 %4638, i32 35
  %4640 = load <2 x double>, ptr %4639, align 16, !tbaa !25
  %4641 = fcmp olt <2 x double> %4637, %4640
  %4642 = select <2 x i1> %4641, <2 x double> %4637, <2 x double> %4640
  %4643 = or disjoint i64 %4631, 2
  %4644 = getelementptr inbounds nuw %struct.Piece, ptr %4625, i64 %4643, i32 35
  %4645 = load <2 x double>, ptr %4644, align 16, !tbaa !25
  %4646 = fcmp olt <2 x double> %4642, %4645
  %4647 = select <2 x i1> %4646, <2 x double> %4642, <2 x double> %4645
  %4648 = or disjoint i64 %4631, 3
  %4649 = getelementptr inbounds nuw %struct.Piece, ptr %4625, i64 %4648, i32 35
  %4650 = load <2 x double>, ptr %4649, align 16, !tbaa !25
  %4651 = fcmp olt <2 x double> %4647, %4650
  %4652 = select <2 x i1> %4651, <2 x double> %4647, <2 x double> %4650
  %4653 = add nuw nsw i64 %4631, 4
  %4654 = add i64 %4633, 4
  %4655 = icmp eq i64 %4654, %4629
  br i1 %4655, label %4656, label %4630, !llvm.loop !113

4656:                                             ; preds = %4630, %4624
  %4657 = phi <2 x double> [ poison, %4624 ], [ %4652, %4630 ]
  %4658 = phi i64 [ 0, %4624 ], [ %4653, %4630 ]
  %4659 = phi <2 x double> [ splat (double 1.000000e+09), %4624 ], [ %4652, %4630 ]
  %4660 = icmp eq i64 %4626, 0
  br i1 %4660, label %4672, label %4661

4661:                                             ; preds = %4656, %4661
  %4662 = phi i64 [ %4669, %4661 ], [ %4658, %4656 ]
  %4663 = phi <2 x double> [ %4668, %4661 ], [ %4659, %4656 ]
  %4664 = phi i64 [ %4670, %4661 ], [ 0, %4656 ]
  %4665 = getelementptr inbounds nuw %struct.Piece, ptr %4625, i64 %4662, i32 35
  %4666 = load <2 x double>, ptr %4665, align 16, !tbaa !25
  %4667 = fcmp olt <2 x double> %4663, %4666
  %4668 = select <2 x i1> %4667, <2 x double> %4663, <2 x double> %4666
  %4669 = add nuw nsw i64 %4662, 1
  %4670 = add i64 %4664, 1
  %4671 = icmp eq i64 %4670, %4626
  br i1 %4671, label %4672, label %4661, !llvm.loop !140

4672:                                             ; preds = %4656, %4661, %4614
  %4673 = phi <2 x double> [ splat (double 1.000000e+09), %4614 ], [ %4657, %4656 ], [ %4668, %4661 ]
  %4674 = load <2 x double>, ptr %216, align 16, !tbaa !25
  %4675 = select <2 x i1> %3574, <2 x double> %4674, <2 x double> %4673
  store <2 x double> %4675, ptr %216, align 16, !tbaa !25
  %4676 = load <2 x double>, ptr %217, align 16, !tbaa !25
  %4677 = fcmp une <2 x double> %4676, zeroinitializer
  %4678 = load <2 x double>, ptr %189, align 16, !tbaa !25
  %4679 = load <2 x double>, ptr %180, align 16, !tbaa !25
  %4680 = fsub <2 x double> %4678, %4679
  %4681 = fcmp une <2 x double> %4676, splat (double 1.000000e+00)
  %4682 = load <2 x double>, ptr %163, align 16, !tbaa !25
  %4683 = load <2 x double>, ptr %218, align 16, !tbaa !25
  %4684 = fsub <2 x double> %4682, %4683
  %4685 = select <2 x i1> %4681, <2 x double> splat (double -1.000000e+00), <2 x double> %4684
  %4686 = fcmp une <2 x double> %4676, splat (double 2.000000e+00)
  %4687 = fsub <2 x double> %4675, %4683
  %4688 = select <2 x i1> %4686, <2 x double> %4685, <2 x double> %4687
  %4689 = fcmp une <2 x double> %4676, splat (double 3.000000e+00)
  %4690 = fsub <2 x double> %4680, %4683
  %4691 = select <2 x i1> %4689, <2 x double> %4688, <2 x double> %4690
  %4692 = fcmp une <2 x double> %4676, splat (double 4.000000e+00)
  %4693 = fsub <2 x double> %4683, %4680
  %4694 = select <2 x i1> %4692, <2 x double> %4691, <2 x double> %4693
  %4695 = fcmp oge <2 x double> %4694, splat (double 0xBEB0C6F7A0B5ED8D)
  %4696 = select <2 x i1> %4695, <2 x i1> %4677, <2 x i1> zeroinitializer
  %4697 = select <2 x i1> %4696, <2 x i64> %3514, <2 x i64> zeroinitializer
  %4698 = xor <2 x i64> %4697, splat (i64 -1)
  %4699 = and <2 x i64> %4621, %4698
  %4700 = load <2 x double>, ptr %138, align 16, !tbaa !25
  %4701 = icmp ne <2 x i64> %4699, zeroinitializer
  %4702 = select <2 x i1> %4677, <2 x i1> %4701, <2 x i1> zeroinitializer
  %4703 = select <2 x i1> %4702, <2 x double> splat (double 2.000000e+00), <2 x double> %4700
  store <2 x double> %4703, ptr %138, align 16, !tbaa !25
  %4704 = or <2 x i64> %4697, %4621
  %4705 = load <2 x double>, ptr %221, align 16, !tbaa !25
  %4706 = fadd <2 x double> %4705, splat (double 1.000000e+00)
  %4707 = icmp eq <2 x i64> %4704, zeroinitializer
  %4708 = select <2 x i1> %4707, <2 x double> %4705, <2 x double> %4706
  store <2 x double> %4708, ptr %221, align 16, !tbaa !25
  %4709 = xor <2 x i64> %4704, %3514
  %4710 = load <2 x double>, ptr %172, align 16, !tbaa !25
  %4711 = fcmp oeq <2 x double> %4710, zeroinitializer
  %4712 = load <2 x double>, ptr %171, align 16, !tbaa !25
  %4713 = fcmp oeq <2 x double> %4712, zeroinitializer
  %4714 = select <2 x i1> %4713, <2 x i1> %4711, <2 x i1> zeroinitializer
  %4715 = select <2 x i1> %4714, <2 x i64> %4709, <2 x i64> zeroinitializer
  %4716 = load <2 x double>, ptr %215, align 16, !tbaa !25
  %4717 = fmul <2 x double> %4716, splat (double 5.000000e-01)
  %4718 = load <2 x double>, ptr %203, align 16, !tbaa !25
  %4719 = fadd <2 x double> %4718, %4717
  %4720 = fadd <2 x double> %4719, splat (double -1.000000e-03)
  %4721 = fcmp ult <2 x double> %4682, %4720
  %4722 = fsub <2 x double> %4718, %4717
  %4723 = fadd <2 x double> %4722, splat (double 1.000000e-03)
  %4724 = fcmp ole <2 x double> %4682, %4723
  %4725 = load <2 x i64>, ptr %165, align 16, !tbaa !25
  %4726 = select <2 x i1> %4724, <2 x i64> splat (i64 -1), <2 x i64> %4725
  %4727 = select <2 x i1> %4721, <2 x i64> %4726, <2 x i64> zeroinitializer
  %4728 = xor <2 x i64> %4727, %4725
  %4729 = and <2 x i64> %4728, %4715
  %4730 = and <2 x i64> %4727, %4715
  %4731 = xor <2 x i64> %4715, splat (i64 -1)
  %4732 = and <2 x i64> %4725, %4731
  %4733 = or disjoint <2 x i64> %4730, %4732
  store <2 x i64> %4733, ptr %165, align 16, !tbaa !25
  %4734 = load <2 x i64>, ptr %158, align 16, !tbaa !25
  %4735 = or <2 x i64> %4729, %4734
  store <2 x i64> %4735, ptr %158, align 16, !tbaa !25
  %4736 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4704)
  %4737 = icmp eq i64 %4736, 0
  br i1 %4737, label %4748, label %4738

4738:                                             ; preds = %4672
  %4739 = extractelement <2 x i64> %4704, i64 0
  %4740 = icmp eq i64 %4739, 0
  br i1 %4740, label %4742, label %4741

4741:                                             ; preds = %4738
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %4742

4742:                                             ; preds = %4741, %4738
  %4743 = extractelement <2 x i64> %4704, i64 1
  %4744 = icmp eq i64 %4743, 0
  br i1 %4744, label %4746, label %4745

4745:                                             ; preds = %4742
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %4746

4746:                                             ; preds = %4745, %4742
  %4747 = load <2 x double>, ptr %138, align 16, !tbaa !25
  br label %4748

4748:                                             ; preds = %4746, %4672
  %4749 = phi <2 x double> [ %4747, %4746 ], [ %4703, %4672 ]
  %4750 = load <2 x double>, ptr %135, align 16, !tbaa !25
  %4751 = load <2 x double>, ptr %229, align 16, !tbaa !25
  %4752 = fadd <2 x double> %4751, splat (double -1.000000e+00)
  %4753 = fcmp oge <2 x double> %4750, %4752
  %4754 = select <2 x i1> %4753, <2 x i64> %3514, <2 x i64> zeroinitializer
  %4755 = icmp eq <2 x i64> %4754, zeroinitializer
  %4756 = select <2 x i1> %4755, <2 x double> %4749, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %4756, ptr %138, align 16, !tbaa !25
  %4757 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4754)
  %4758 = icmp eq i64 %4757, 0
  br i1 %4758, label %526, label %4759

4759:                                             ; preds = %4748
  %4760 = extractelement <2 x i64> %4754, i64 0
  %4761 = icmp eq i64 %4760, 0
  br i1 %4761, label %4763, label %4762

4762:                                             ; preds = %4759
  store double 1.000000e+00, ptr %130, align 8, !tbaa !41
  br label %4763

4763:                                             ; preds = %4762, %4759
  %4764 = extractelement <2 x i64> %4754, i64 1
  %4765 = icmp eq i64 %4764, 0
  br i1 %4765, label %526, label %4766

4766:                                             ; preds = %4763
  store double 1.000000e+00, ptr %263, align 8, !tbaa !41
  br label %526

4767:                                             ; preds = %526, %531, %121
  %4768 = phi i64 [ 0, %121 ], [ 1, %531 ], [ 0, %526 ]
  ret i64 %4768
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 608
  %6 = load i64, ptr %5, align 16, !tbaa !26
  %7 = add nsw i64 %6, 1
  store i64 %7, ptr %5, align 16, !tbaa !26
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1536) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %6) #7
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !25
  %8 = zext nneg i32 %2 to i64
  %9 = getelementptr inbounds nuw i64, ptr %4, i64 %8
  store i64 -1, ptr %9, align 8, !tbaa !29
  %10 = load <2 x i64>, ptr %4, align 16, !tbaa !25
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 1520
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
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  %177 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %179 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %181 = load ptr, ptr %180, align 8
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %185 = getelementptr inbounds nuw i8, ptr %0, i64 1488
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
  %257 = getelementptr inbounds nuw i8, ptr %0, i64 1448
  %258 = load i64, ptr %257, align 8, !tbaa !29
  %259 = load i64, ptr %178, align 8, !tbaa !133
  %260 = icmp eq i64 %258, %259
  br i1 %260, label %264, label %261

261:                                              ; preds = %256
  %262 = getelementptr inbounds nuw i8, ptr %0, i64 1496
  %263 = load ptr, ptr %262, align 8, !tbaa !134
  br label %278

264:                                              ; preds = %256
  %265 = getelementptr inbounds nuw i8, ptr %0, i64 1432
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
  %277 = getelementptr inbounds nuw i8, ptr %0, i64 1496
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
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1536) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %6 = zext nneg i32 %2 to i64
  %7 = getelementptr inbounds nuw [2 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !29
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !133
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %11 = getelementptr inbounds nuw [2 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !29
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %13 = shl nuw nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = zext nneg i32 %14 to i64
  %16 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !29
  %17 = zext nneg i32 %13 to i64
  %18 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !29
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 1504
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
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 1528
  %32 = load ptr, ptr %31, align 8, !tbaa !27
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 584
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %35 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %36 = load ptr, ptr %35, align 8, !tbaa !144
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %38 = load ptr, ptr %37, align 8, !tbaa !145
  %39 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %40 = load ptr, ptr %39, align 8, !tbaa !146
  br label %153

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

60:                                               ; preds = %532, %26
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
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %134 = getelementptr inbounds nuw double, ptr %123, i64 %6
  store double 0.000000e+00, ptr %134, align 8, !tbaa !41
  %135 = getelementptr inbounds nuw double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %135, align 8, !tbaa !41
  %136 = getelementptr inbounds nuw double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !41
  %137 = getelementptr inbounds nuw double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !41
  %138 = getelementptr inbounds nuw double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !41
  %139 = getelementptr inbounds nuw double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !41
  %140 = getelementptr inbounds nuw double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !41
  %141 = getelementptr inbounds nuw double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !41
  %142 = getelementptr inbounds nuw double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !41
  %143 = getelementptr inbounds nuw double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !41
  %144 = getelementptr inbounds nuw double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !41
  %145 = getelementptr inbounds nuw i8, ptr %0, i64 1392
  %146 = getelementptr inbounds nuw i64, ptr %145, i64 %6
  store i64 0, ptr %146, align 8, !tbaa !29
  %147 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %148 = getelementptr inbounds nuw i64, ptr %147, i64 %6
  store i64 -1, ptr %148, align 8, !tbaa !29
  %149 = getelementptr inbounds nuw i8, ptr %0, i64 1376
  %150 = getelementptr inbounds nuw i64, ptr %149, i64 %6
  store i64 -1, ptr %150, align 8, !tbaa !29
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 1360
  %152 = getelementptr inbounds nuw i64, ptr %151, i64 %6
  store i64 -1, ptr %152, align 8, !tbaa !29
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #7
  ret void

153:                                              ; preds = %30, %532
  %154 = phi i64 [ %28, %30 ], [ %534, %532 ]
  %155 = phi i64 [ 0, %30 ], [ %533, %532 ]
  %156 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %155
  %157 = load i64, ptr %33, align 8, !tbaa !20
  %158 = load i64, ptr %34, align 16, !tbaa !21
  %159 = mul nsw i64 %154, %3
  %160 = add nsw i64 %159, %155
  %161 = getelementptr inbounds nuw i8, ptr %156, i64 1888
  %162 = load i64, ptr %161, align 16, !tbaa !30
  %163 = mul i64 %160, 368
  %164 = getelementptr i8, ptr %36, i64 %163
  %165 = getelementptr inbounds nuw double, ptr %156, i64 %6
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
  %179 = getelementptr inbounds nuw i8, ptr %156, i64 1984
  %180 = load ptr, ptr %179, align 16, !tbaa !66
  %181 = getelementptr inbounds nuw double, ptr %180, i64 %6
  %182 = getelementptr double, ptr %176, i64 %157
  %183 = getelementptr inbounds nuw i8, ptr %156, i64 1992
  %184 = load ptr, ptr %183, align 8, !tbaa !47
  %185 = getelementptr inbounds nuw double, ptr %184, i64 %6
  %186 = shl i64 %157, 4
  %187 = getelementptr i8, ptr %176, i64 %186
  %188 = getelementptr inbounds nuw i8, ptr %156, i64 2000
  %189 = load ptr, ptr %188, align 16, !tbaa !117
  %190 = getelementptr inbounds nuw double, ptr %189, i64 %6
  %191 = and i64 %157, 1
  %192 = icmp eq i64 %157, 1
  br i1 %192, label %206, label %193

193:                                              ; preds = %178
  %194 = and i64 %157, 9223372036854775806
  br label %234

195:                                              ; preds = %195, %153
  %196 = phi i64 [ 0, %153 ], [ %204, %195 ]
  %197 = getelementptr double, ptr %164, i64 %196
  %198 = load double, ptr %197, align 8, !tbaa !41
  %199 = getelementptr inbounds nuw <2 x double>, ptr %165, i64 %196
  store double %198, ptr %199, align 8, !tbaa !41
  %200 = or disjoint i64 %196, 1
  %201 = getelementptr double, ptr %164, i64 %200
  %202 = load double, ptr %201, align 8, !tbaa !41
  %203 = getelementptr inbounds nuw <2 x double>, ptr %165, i64 %200
  store double %202, ptr %203, align 8, !tbaa !41
  %204 = add nuw nsw i64 %196, 2
  %205 = icmp eq i64 %204, 46
  br i1 %205, label %166, label %195, !llvm.loop !148

206:                                              ; preds = %234, %178
  %207 = phi i64 [ 0, %178 ], [ %256, %234 ]
  %208 = icmp eq i64 %191, 0
  br i1 %208, label %219, label %209

209:                                              ; preds = %206
  %210 = getelementptr inbounds nuw double, ptr %176, i64 %207
  %211 = load double, ptr %210, align 8, !tbaa !41
  %212 = getelementptr inbounds nuw <2 x double>, ptr %181, i64 %207
  store double %211, ptr %212, align 8, !tbaa !41
  %213 = getelementptr double, ptr %182, i64 %207
  %214 = load double, ptr %213, align 8, !tbaa !41
  %215 = getelementptr inbounds nuw <2 x double>, ptr %185, i64 %207
  store double %214, ptr %215, align 8, !tbaa !41
  %216 = getelementptr double, ptr %187, i64 %207
  %217 = load double, ptr %216, align 8, !tbaa !41
  %218 = getelementptr inbounds nuw <2 x double>, ptr %190, i64 %207
  store double %217, ptr %218, align 8, !tbaa !41
  br label %219

219:                                              ; preds = %209, %206, %166
  %220 = getelementptr inbounds nuw i8, ptr %156, i64 240
  %221 = getelementptr inbounds nuw double, ptr %220, i64 %6
  %222 = load double, ptr %221, align 8, !tbaa !41
  %223 = load double, ptr %165, align 8, !tbaa !41
  %224 = icmp sgt i64 %173, 0
  br i1 %224, label %225, label %271

225:                                              ; preds = %219
  %226 = getelementptr double, ptr %176, i64 %170
  %227 = getelementptr inbounds nuw i8, ptr %156, i64 2008
  %228 = load ptr, ptr %227, align 8, !tbaa !34
  %229 = getelementptr inbounds nuw double, ptr %228, i64 %6
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
  %238 = load double, ptr %237, align 8, !tbaa !41
  %239 = getelementptr inbounds nuw <2 x double>, ptr %181, i64 %235
  store double %238, ptr %239, align 8, !tbaa !41
  %240 = getelementptr double, ptr %182, i64 %235
  %241 = load double, ptr %240, align 8, !tbaa !41
  %242 = getelementptr inbounds nuw <2 x double>, ptr %185, i64 %235
  store double %241, ptr %242, align 8, !tbaa !41
  %243 = getelementptr double, ptr %187, i64 %235
  %244 = load double, ptr %243, align 8, !tbaa !41
  %245 = getelementptr inbounds nuw <2 x double>, ptr %190, i64 %235
  store double %244, ptr %245, align 8, !tbaa !41
  %246 = or disjoint i64 %235, 1
  %247 = getelementptr inbounds nuw double, ptr %176, i64 %246
  %248 = load double, ptr %247, align 8, !tbaa !41
  %249 = getelementptr inbounds nuw <2 x double>, ptr %181, i64 %246
  store double %248, ptr %249, align 8, !tbaa !41
  %250 = getelementptr double, ptr %182, i64 %246
  %251 = load double, ptr %250, align 8, !tbaa !41
  %252 = getelementptr inbounds nuw <2 x double>, ptr %185, i64 %246
  store double %251, ptr %252, align 8, !tbaa !41
  %253 = getelementptr double, ptr %187, i64 %246
  %254 = load double, ptr %253, align 8, !tbaa !41
  %255 = getelementptr inbounds nuw <2 x double>, ptr %190, i64 %246
  store double %254, ptr %255, align 8, !tbaa !41
  %256 = add nuw nsw i64 %235, 2
  %257 = add i64 %236, 2
  %258 = icmp eq i64 %257, %194
  br i1 %258, label %206, label %234, !llvm.loop !149

259:                                              ; preds = %280, %225
  %260 = phi i64 [ 0, %225 ], [ %298, %280 ]
  %261 = icmp eq i64 %230, 0
  br i1 %261, label %271, label %262

262:                                              ; preds = %259, %262
  %263 = phi i64 [ %268, %262 ], [ %260, %259 ]
  %264 = phi i64 [ %269, %262 ], [ 0, %259 ]
  %265 = getelementptr double, ptr %226, i64 %263
  %266 = load double, ptr %265, align 8, !tbaa !41
  %267 = getelementptr inbounds nuw <2 x double>, ptr %229, i64 %263
  store double %266, ptr %267, align 8, !tbaa !41
  %268 = add nuw nsw i64 %263, 1
  %269 = add i64 %264, 1
  %270 = icmp eq i64 %269, %230
  br i1 %270, label %271, label %262, !llvm.loop !150

271:                                              ; preds = %259, %262, %219
  %272 = icmp ne i64 %162, 0
  %273 = icmp sgt i64 %157, -1
  %274 = select i1 %272, i1 %273, i1 false
  br i1 %274, label %275, label %301

275:                                              ; preds = %271
  %276 = fdiv double 1.000000e+00, %223
  %277 = getelementptr inbounds nuw i8, ptr %156, i64 2008
  %278 = load ptr, ptr %277, align 8, !tbaa !34
  %279 = getelementptr inbounds nuw double, ptr %278, i64 %6
  br label %420

280:                                              ; preds = %280, %232
  %281 = phi i64 [ 0, %232 ], [ %298, %280 ]
  %282 = phi i64 [ 0, %232 ], [ %299, %280 ]
  %283 = getelementptr double, ptr %226, i64 %281
  %284 = load double, ptr %283, align 8, !tbaa !41
  %285 = getelementptr inbounds nuw <2 x double>, ptr %229, i64 %281
  store double %284, ptr %285, align 8, !tbaa !41
  %286 = or disjoint i64 %281, 1
  %287 = getelementptr double, ptr %226, i64 %286
  %288 = load double, ptr %287, align 8, !tbaa !41
  %289 = getelementptr inbounds nuw <2 x double>, ptr %229, i64 %286
  store double %288, ptr %289, align 8, !tbaa !41
  %290 = or disjoint i64 %281, 2
  %291 = getelementptr double, ptr %226, i64 %290
  %292 = load double, ptr %291, align 8, !tbaa !41
  %293 = getelementptr inbounds nuw <2 x double>, ptr %229, i64 %290
  store double %292, ptr %293, align 8, !tbaa !41
  %294 = or disjoint i64 %281, 3
  %295 = getelementptr double, ptr %226, i64 %294
  %296 = load double, ptr %295, align 8, !tbaa !41
  %297 = getelementptr inbounds nuw <2 x double>, ptr %229, i64 %294
  store double %296, ptr %297, align 8, !tbaa !41
  %298 = add nuw nsw i64 %281, 4
  %299 = add i64 %282, 4
  %300 = icmp eq i64 %299, %233
  br i1 %300, label %259, label %280, !llvm.loop !151

301:                                              ; preds = %420, %271
  %302 = getelementptr inbounds nuw i8, ptr %156, i64 640
  %303 = getelementptr inbounds nuw double, ptr %302, i64 %6
  %304 = load double, ptr %303, align 8, !tbaa !41
  %305 = getelementptr inbounds nuw i8, ptr %156, i64 656
  %306 = getelementptr inbounds nuw double, ptr %305, i64 %6
  %307 = load double, ptr %306, align 8, !tbaa !41
  %308 = getelementptr inbounds nuw i8, ptr %156, i64 672
  %309 = getelementptr inbounds nuw double, ptr %308, i64 %6
  %310 = load double, ptr %309, align 8, !tbaa !41
  %311 = getelementptr inbounds nuw i8, ptr %156, i64 688
  %312 = getelementptr inbounds nuw double, ptr %311, i64 %6
  %313 = load double, ptr %312, align 8, !tbaa !41
  %314 = tail call double @llvm.fmuladd.f64(double %223, double %313, double %310)
  %315 = tail call double @llvm.fmuladd.f64(double %223, double %314, double %307)
  %316 = tail call double @llvm.fmuladd.f64(double %223, double %315, double %304)
  %317 = getelementptr inbounds nuw i8, ptr %156, i64 208
  %318 = getelementptr inbounds nuw double, ptr %317, i64 %6
  %319 = load double, ptr %318, align 8, !tbaa !41
  %320 = getelementptr inbounds nuw i8, ptr %156, i64 352
  %321 = getelementptr inbounds nuw double, ptr %320, i64 %6
  %322 = load double, ptr %321, align 8, !tbaa !41
  %323 = getelementptr inbounds nuw i8, ptr %156, i64 384
  %324 = getelementptr inbounds nuw double, ptr %323, i64 %6
  %325 = load double, ptr %324, align 8, !tbaa !41
  %326 = fsub double %322, %325
  %327 = fmul double %319, %326
  %328 = getelementptr inbounds nuw i8, ptr %156, i64 736
  %329 = getelementptr inbounds nuw i8, ptr %156, i64 928
  %330 = getelementptr inbounds nuw i8, ptr %156, i64 1120
  %331 = getelementptr inbounds nuw i8, ptr %156, i64 224
  %332 = getelementptr inbounds nuw double, ptr %331, i64 %6
  %333 = getelementptr inbounds nuw i8, ptr %156, i64 256
  %334 = getelementptr inbounds nuw double, ptr %333, i64 %6
  %335 = getelementptr inbounds nuw double, ptr %328, i64 %6
  %336 = getelementptr inbounds nuw i8, ptr %335, i64 80
  store double 0.000000e+00, ptr %336, align 8, !tbaa !41
  %337 = getelementptr inbounds nuw i8, ptr %335, i64 96
  store double 0.000000e+00, ptr %337, align 8, !tbaa !41
  %338 = getelementptr inbounds nuw i8, ptr %335, i64 112
  store double 0.000000e+00, ptr %338, align 8, !tbaa !41
  %339 = getelementptr inbounds nuw i8, ptr %335, i64 128
  store double 0.000000e+00, ptr %339, align 8, !tbaa !41
  %340 = getelementptr inbounds nuw i8, ptr %335, i64 160
  store double 0.000000e+00, ptr %340, align 8, !tbaa !41
  store double %223, ptr %335, align 8, !tbaa !41
  %341 = getelementptr inbounds nuw i8, ptr %156, i64 752
  %342 = getelementptr inbounds nuw double, ptr %341, i64 %6
  store double %322, ptr %342, align 8, !tbaa !41
  %343 = load double, ptr %332, align 8, !tbaa !41
  %344 = getelementptr inbounds nuw i8, ptr %156, i64 768
  %345 = getelementptr inbounds nuw double, ptr %344, i64 %6
  store double %343, ptr %345, align 8, !tbaa !41
  %346 = getelementptr inbounds nuw i8, ptr %156, i64 784
  %347 = getelementptr inbounds nuw double, ptr %346, i64 %6
  store double %327, ptr %347, align 8, !tbaa !41
  %348 = getelementptr inbounds nuw i8, ptr %156, i64 880
  %349 = getelementptr inbounds nuw double, ptr %348, i64 %6
  store double %222, ptr %349, align 8, !tbaa !41
  %350 = load double, ptr %334, align 8, !tbaa !41
  %351 = getelementptr inbounds nuw i8, ptr %156, i64 800
  %352 = getelementptr inbounds nuw double, ptr %351, i64 %6
  store double %350, ptr %352, align 8, !tbaa !41
  %353 = getelementptr inbounds nuw i8, ptr %156, i64 912
  %354 = getelementptr inbounds nuw double, ptr %353, i64 %6
  store double %316, ptr %354, align 8, !tbaa !41
  %355 = getelementptr inbounds nuw double, ptr %329, i64 %6
  %356 = getelementptr inbounds nuw i8, ptr %355, i64 80
  store double 0.000000e+00, ptr %356, align 8, !tbaa !41
  %357 = getelementptr inbounds nuw i8, ptr %355, i64 96
  store double 0.000000e+00, ptr %357, align 8, !tbaa !41
  %358 = getelementptr inbounds nuw i8, ptr %355, i64 112
  store double 0.000000e+00, ptr %358, align 8, !tbaa !41
  %359 = getelementptr inbounds nuw i8, ptr %355, i64 128
  store double 0.000000e+00, ptr %359, align 8, !tbaa !41
  %360 = getelementptr inbounds nuw i8, ptr %355, i64 160
  store double 0.000000e+00, ptr %360, align 8, !tbaa !41
  store double %223, ptr %355, align 8, !tbaa !41
  %361 = getelementptr inbounds nuw i8, ptr %156, i64 944
  %362 = getelementptr inbounds nuw double, ptr %361, i64 %6
  store double %322, ptr %362, align 8, !tbaa !41
  %363 = getelementptr inbounds nuw i8, ptr %156, i64 960
  %364 = getelementptr inbounds nuw double, ptr %363, i64 %6
  store double %343, ptr %364, align 8, !tbaa !41
  %365 = getelementptr inbounds nuw i8, ptr %156, i64 976
  %366 = getelementptr inbounds nuw double, ptr %365, i64 %6
  store double %327, ptr %366, align 8, !tbaa !41
  %367 = getelementptr inbounds nuw i8, ptr %156, i64 1072
  %368 = getelementptr inbounds nuw double, ptr %367, i64 %6
  store double %222, ptr %368, align 8, !tbaa !41
  %369 = getelementptr inbounds nuw i8, ptr %156, i64 992
  %370 = getelementptr inbounds nuw double, ptr %369, i64 %6
  store double %350, ptr %370, align 8, !tbaa !41
  %371 = getelementptr inbounds nuw i8, ptr %156, i64 1104
  %372 = getelementptr inbounds nuw double, ptr %371, i64 %6
  store double %316, ptr %372, align 8, !tbaa !41
  %373 = getelementptr inbounds nuw double, ptr %330, i64 %6
  %374 = getelementptr inbounds nuw i8, ptr %373, i64 80
  store double 0.000000e+00, ptr %374, align 8, !tbaa !41
  %375 = getelementptr inbounds nuw i8, ptr %373, i64 96
  store double 0.000000e+00, ptr %375, align 8, !tbaa !41
  %376 = getelementptr inbounds nuw i8, ptr %373, i64 112
  store double 0.000000e+00, ptr %376, align 8, !tbaa !41
  %377 = getelementptr inbounds nuw i8, ptr %373, i64 128
  store double 0.000000e+00, ptr %377, align 8, !tbaa !41
  %378 = getelementptr inbounds nuw i8, ptr %373, i64 160
  store double 0.000000e+00, ptr %378, align 8, !tbaa !41
  store double %223, ptr %373, align 8, !tbaa !41
  %379 = load double, ptr %321, align 8, !tbaa !41
  %380 = getelementptr inbounds nuw i8, ptr %156, i64 1136
  %381 = getelementptr inbounds nuw double, ptr %380, i64 %6
  store double %379, ptr %381, align 8, !tbaa !41
  %382 = getelementptr inbounds nuw i8, ptr %156, i64 1152
  %383 = getelementptr inbounds nuw double, ptr %382, i64 %6
  store double %343, ptr %383, align 8, !tbaa !41
  %384 = getelementptr inbounds nuw i8, ptr %156, i64 1168
  %385 = getelementptr inbounds nuw double, ptr %384, i64 %6
  store double %327, ptr %385, align 8, !tbaa !41
  %386 = getelementptr inbounds nuw i8, ptr %156, i64 1264
  %387 = getelementptr inbounds nuw double, ptr %386, i64 %6
  store double %222, ptr %387, align 8, !tbaa !41
  %388 = getelementptr inbounds nuw i8, ptr %156, i64 1184
  %389 = getelementptr inbounds nuw double, ptr %388, i64 %6
  store double %350, ptr %389, align 8, !tbaa !41
  %390 = getelementptr inbounds nuw i8, ptr %156, i64 1296
  %391 = getelementptr inbounds nuw double, ptr %390, i64 %6
  store double %316, ptr %391, align 8, !tbaa !41
  %392 = load double, ptr %332, align 8, !tbaa !41
  %393 = fadd double %327, %392
  %394 = getelementptr inbounds nuw i8, ptr %156, i64 400
  %395 = getelementptr inbounds nuw double, ptr %394, i64 %6
  store double %393, ptr %395, align 8, !tbaa !41
  %396 = getelementptr inbounds nuw i8, ptr %156, i64 1392
  %397 = getelementptr inbounds nuw i8, ptr %156, i64 1600
  %398 = getelementptr inbounds nuw i8, ptr %156, i64 1616
  %399 = getelementptr inbounds nuw i8, ptr %156, i64 1808
  %400 = getelementptr inbounds nuw double, ptr %396, i64 %6
  store double %222, ptr %400, align 8, !tbaa !41
  %401 = getelementptr inbounds nuw double, ptr %397, i64 %6
  store double %222, ptr %401, align 8, !tbaa !41
  %402 = getelementptr inbounds nuw double, ptr %398, i64 %6
  store double %222, ptr %402, align 8, !tbaa !41
  %403 = getelementptr inbounds nuw double, ptr %399, i64 %6
  store double %222, ptr %403, align 8, !tbaa !41
  %404 = getelementptr inbounds nuw i8, ptr %156, i64 1408
  %405 = getelementptr inbounds nuw i8, ptr %156, i64 1424
  %406 = getelementptr inbounds nuw i8, ptr %156, i64 1824
  %407 = getelementptr inbounds nuw i8, ptr %156, i64 1792
  %408 = getelementptr inbounds nuw i8, ptr %156, i64 1712
  %409 = getelementptr inbounds nuw double, ptr %404, i64 %6
  store double 0.000000e+00, ptr %409, align 8, !tbaa !41
  %410 = getelementptr inbounds nuw double, ptr %405, i64 %6
  store double 0.000000e+00, ptr %410, align 8, !tbaa !41
  %411 = getelementptr inbounds nuw double, ptr %406, i64 %6
  store double 0.000000e+00, ptr %411, align 8, !tbaa !41
  %412 = getelementptr inbounds nuw double, ptr %407, i64 %6
  store double 0.000000e+00, ptr %412, align 8, !tbaa !41
  %413 = getelementptr inbounds nuw double, ptr %408, i64 %6
  store double 0.000000e+00, ptr %413, align 8, !tbaa !41
  %414 = getelementptr inbounds nuw i8, ptr %156, i64 1840
  %415 = getelementptr inbounds nuw i64, ptr %414, i64 %6
  store i64 0, ptr %415, align 8, !tbaa !29
  %416 = getelementptr inbounds nuw i8, ptr %156, i64 1856
  %417 = getelementptr inbounds nuw i64, ptr %416, i64 %6
  store i64 -1, ptr %417, align 8, !tbaa !29
  %418 = getelementptr inbounds nuw i8, ptr %156, i64 1872
  %419 = getelementptr inbounds nuw i64, ptr %418, i64 %6
  store i64 0, ptr %419, align 8, !tbaa !29
  br i1 %177, label %442, label %458

420:                                              ; preds = %275, %420
  %421 = phi i64 [ 0, %275 ], [ %440, %420 ]
  %422 = icmp slt i64 %421, %162
  %423 = select i1 %422, double %276, double 1.000000e+00
  %424 = shl nsw i64 %421, 6
  %425 = getelementptr inbounds nuw i8, ptr %279, i64 %424
  %426 = load double, ptr %425, align 8, !tbaa !41
  %427 = fmul double %423, %426
  store double %427, ptr %425, align 8, !tbaa !41
  %428 = fdiv double %423, %223
  %429 = getelementptr inbounds nuw i8, ptr %425, i64 16
  %430 = load double, ptr %429, align 8, !tbaa !41
  %431 = fmul double %428, %430
  store double %431, ptr %429, align 8, !tbaa !41
  %432 = fdiv double %428, %223
  %433 = getelementptr inbounds nuw i8, ptr %425, i64 32
  %434 = load double, ptr %433, align 8, !tbaa !41
  %435 = fmul double %432, %434
  store double %435, ptr %433, align 8, !tbaa !41
  %436 = fdiv double %432, %223
  %437 = getelementptr inbounds nuw i8, ptr %425, i64 48
  %438 = load double, ptr %437, align 8, !tbaa !41
  %439 = fmul double %436, %438
  store double %439, ptr %437, align 8, !tbaa !41
  %440 = add nuw nsw i64 %421, 1
  %441 = icmp slt i64 %421, %157
  br i1 %441, label %420, label %301, !llvm.loop !152

442:                                              ; preds = %301
  %443 = getelementptr inbounds nuw i8, ptr %156, i64 1912
  %444 = load ptr, ptr %443, align 8, !tbaa !55
  %445 = getelementptr inbounds nuw double, ptr %444, i64 %6
  %446 = getelementptr inbounds nuw i8, ptr %156, i64 1904
  %447 = load ptr, ptr %446, align 16, !tbaa !45
  %448 = getelementptr inbounds nuw double, ptr %447, i64 %6
  %449 = getelementptr inbounds nuw i8, ptr %156, i64 1896
  %450 = load ptr, ptr %449, align 8, !tbaa !56
  %451 = getelementptr inbounds nuw double, ptr %450, i64 %6
  %452 = getelementptr inbounds nuw i8, ptr %156, i64 1936
  %453 = load ptr, ptr %452, align 16, !tbaa !46
  %454 = getelementptr inbounds nuw double, ptr %453, i64 %6
  %455 = getelementptr inbounds nuw i8, ptr %156, i64 1928
  %456 = load ptr, ptr %455, align 8, !tbaa !59
  %457 = getelementptr inbounds nuw double, ptr %456, i64 %6
  br label %471

458:                                              ; preds = %471, %301
  %459 = icmp slt i64 %158, 0
  br i1 %459, label %532, label %460

460:                                              ; preds = %458
  %461 = getelementptr inbounds nuw i8, ptr %156, i64 2080
  %462 = load ptr, ptr %461, align 16, !tbaa !62
  %463 = getelementptr inbounds nuw double, ptr %462, i64 %6
  %464 = getelementptr inbounds nuw i8, ptr %156, i64 2072
  %465 = load ptr, ptr %464, align 8, !tbaa !48
  %466 = getelementptr inbounds nuw double, ptr %465, i64 %6
  %467 = icmp eq i64 %158, 0
  br i1 %467, label %480, label %468

468:                                              ; preds = %460
  %469 = add nuw i64 %158, 1
  %470 = and i64 %469, -2
  br label %505

471:                                              ; preds = %442, %471
  %472 = phi i64 [ 0, %442 ], [ %478, %471 ]
  %473 = getelementptr inbounds nuw <2 x double>, ptr %445, i64 %472
  store double %222, ptr %473, align 8, !tbaa !41
  %474 = getelementptr inbounds nuw <2 x double>, ptr %448, i64 %472
  store double %222, ptr %474, align 8, !tbaa !41
  %475 = getelementptr inbounds nuw <2 x double>, ptr %451, i64 %472
  store double %222, ptr %475, align 8, !tbaa !41
  %476 = getelementptr inbounds nuw <2 x double>, ptr %454, i64 %472
  store double 1.000000e+00, ptr %476, align 8, !tbaa !41
  %477 = getelementptr inbounds nuw <2 x double>, ptr %457, i64 %472
  store double 1.000000e+00, ptr %477, align 8, !tbaa !41
  %478 = add nuw nsw i64 %472, 1
  %479 = icmp eq i64 %478, %157
  br i1 %479, label %458, label %471, !llvm.loop !153

480:                                              ; preds = %519, %460
  %481 = phi i64 [ 0, %460 ], [ %523, %519 ]
  %482 = and i64 %158, 1
  %483 = icmp eq i64 %482, 0
  br i1 %483, label %484, label %492

484:                                              ; preds = %480
  %485 = icmp slt i64 %481, %158
  br i1 %485, label %488, label %486

486:                                              ; preds = %484
  %487 = load double, ptr %321, align 8, !tbaa !41
  br label %488

488:                                              ; preds = %486, %484
  %489 = phi double [ %487, %486 ], [ %316, %484 ]
  %490 = getelementptr inbounds nuw <2 x double>, ptr %463, i64 %481
  store double %489, ptr %490, align 8, !tbaa !41
  %491 = getelementptr inbounds nuw <2 x double>, ptr %466, i64 %481
  store double %489, ptr %491, align 8, !tbaa !41
  br label %492

492:                                              ; preds = %480, %488
  %493 = icmp eq i64 %158, 0
  br i1 %493, label %532, label %494

494:                                              ; preds = %492
  %495 = getelementptr inbounds nuw i8, ptr %156, i64 2032
  %496 = load ptr, ptr %495, align 16, !tbaa !63
  %497 = getelementptr inbounds nuw double, ptr %496, i64 %6
  %498 = getelementptr inbounds nuw i8, ptr %156, i64 2024
  %499 = load ptr, ptr %498, align 8, !tbaa !49
  %500 = getelementptr inbounds nuw double, ptr %499, i64 %6
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
  %510 = load double, ptr %321, align 8, !tbaa !41
  br label %511

511:                                              ; preds = %505, %509
  %512 = phi double [ %510, %509 ], [ %316, %505 ]
  %513 = getelementptr inbounds nuw <2 x double>, ptr %463, i64 %506
  store double %512, ptr %513, align 8, !tbaa !41
  %514 = getelementptr inbounds nuw <2 x double>, ptr %466, i64 %506
  store double %512, ptr %514, align 8, !tbaa !41
  %515 = or disjoint i64 %506, 1
  %516 = icmp slt i64 %515, %158
  br i1 %516, label %519, label %517

517:                                              ; preds = %511
  %518 = load double, ptr %321, align 8, !tbaa !41
  br label %519

519:                                              ; preds = %517, %511
  %520 = phi double [ %518, %517 ], [ %316, %511 ]
  %521 = getelementptr inbounds nuw <2 x double>, ptr %463, i64 %515
  store double %520, ptr %521, align 8, !tbaa !41
  %522 = getelementptr inbounds nuw <2 x double>, ptr %466, i64 %515
  store double %520, ptr %522, align 8, !tbaa !41
  %523 = add nuw i64 %506, 2
  %524 = add i64 %507, 2
  %525 = icmp eq i64 %524, %470
  br i1 %525, label %480, label %505, !llvm.loop !154

526:                                              ; preds = %536, %494
  %527 = phi i64 [ 0, %494 ], [ %544, %536 ]
  %528 = icmp eq i64 %501, 0
  br i1 %528, label %532, label %529

529:                                              ; preds = %526
  %530 = getelementptr inbounds nuw <2 x double>, ptr %497, i64 %527
  store double %222, ptr %530, align 8, !tbaa !41
  %531 = getelementptr inbounds nuw <2 x double>, ptr %500, i64 %527
  store double %222, ptr %531, align 8, !tbaa !41
  br label %532

532:                                              ; preds = %529, %526, %458, %492
  %533 = add nuw nsw i64 %155, 1
  %534 = load i64, ptr %27, align 16, !tbaa !16
  %535 = icmp slt i64 %533, %534
  br i1 %535, label %153, label %60, !llvm.loop !155

536:                                              ; preds = %536, %503
  %537 = phi i64 [ 0, %503 ], [ %544, %536 ]
  %538 = phi i64 [ 0, %503 ], [ %545, %536 ]
  %539 = getelementptr inbounds nuw <2 x double>, ptr %497, i64 %537
  store double %222, ptr %539, align 8, !tbaa !41
  %540 = getelementptr inbounds nuw <2 x double>, ptr %500, i64 %537
  store double %222, ptr %540, align 8, !tbaa !41
  %541 = or disjoint i64 %537, 1
  %542 = getelementptr inbounds nuw <2 x double>, ptr %497, i64 %541
  store double %222, ptr %542, align 8, !tbaa !41
  %543 = getelementptr inbounds nuw <2 x double>, ptr %500, i64 %541
  store double %222, ptr %543, align 8, !tbaa !41
  %544 = add nuw nsw i64 %537, 2
  %545 = add i64 %538, 2
  %546 = icmp eq i64 %545, %504
  br i1 %546, label %526, label %536, !llvm.loop !156
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(read, argmem: readwrite, inaccessiblemem: none)
define internal fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr nocapture noundef nonnull align 16 dereferenceable(1536) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, <2 x i64> noundef %3) unnamed_addr #4 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %6 = load <2 x double>, ptr %5, align 16, !tbaa !25
  %7 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %8 = load <2 x double>, ptr %7, align 16, !tbaa !25
  %9 = fadd <2 x double> %6, %8
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw i8, ptr %1, i64 136
  %12 = load ptr, ptr %11, align 8
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %14 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %15 = load ptr, ptr %14, align 8
  %16 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %17 = load ptr, ptr %16, align 8
  %18 = extractelement <2 x i64> %3, i64 0
  %19 = icmp eq i64 %18, 0
  br i1 %19, label %84, label %20

20:                                               ; preds = %4
  %21 = getelementptr inbounds nuw i8, ptr %0, i64 1424
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
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1432
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
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 16 dereferenceable(1536) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !159
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !160
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 1424
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
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 1504
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
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 1408
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
  %245 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  %271 = getelementptr inbounds nuw i8, ptr %0, i64 1392
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
  %281 = getelementptr inbounds nuw i8, ptr %0, i64 1408
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
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 576, !6, i64 584, !6, i64 592, !6, i64 600, !6, i64 608, !7, i64 624, !7, i64 640, !7, i64 736, !7, i64 832, !7, i64 928, !7, i64 944, !7, i64 960, !7, i64 976, !7, i64 992, !7, i64 1008, !7, i64 1024, !7, i64 1040, !7, i64 1056, !7, i64 1072, !7, i64 1088, !7, i64 1104, !7, i64 1120, !7, i64 1136, !7, i64 1152, !7, i64 1168, !7, i64 1184, !7, i64 1200, !7, i64 1216, !7, i64 1232, !7, i64 1248, !7, i64 1264, !7, i64 1280, !7, i64 1296, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1488, !7, i64 1504, !11, i64 1520, !19, i64 1528}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 584}
!21 = !{!17, !6, i64 592}
!22 = !{!5, !6, i64 32}
!23 = !{!17, !6, i64 600}
!24 = !{!5, !9, i64 64}
!25 = !{!7, !7, i64 0}
!26 = !{!17, !6, i64 608}
!27 = !{!17, !19, i64 1528}
!28 = !{!5, !12, i64 152}
!29 = !{!6, !6, i64 0}
!30 = !{!31, !6, i64 1888}
!31 = !{!"_ZTS5Piece", !32, i64 0, !7, i64 736, !7, i64 928, !7, i64 1120, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1520, !7, i64 1536, !7, i64 1552, !7, i64 1568, !7, i64 1584, !7, i64 1600, !7, i64 1616, !7, i64 1632, !7, i64 1648, !7, i64 1664, !7, i64 1680, !7, i64 1696, !7, i64 1712, !7, i64 1728, !7, i64 1744, !7, i64 1760, !7, i64 1776, !7, i64 1792, !7, i64 1808, !7, i64 1824, !7, i64 1840, !7, i64 1856, !7, i64 1872, !6, i64 1888, !11, i64 1896, !11, i64 1904, !11, i64 1912, !11, i64 1920, !11, i64 1928, !11, i64 1936, !11, i64 1944, !11, i64 1952, !11, i64 1960, !11, i64 1968, !11, i64 1976, !11, i64 1984, !11, i64 1992, !11, i64 2000, !11, i64 2008, !11, i64 2016, !11, i64 2024, !11, i64 2032, !11, i64 2040, !11, i64 2048, !11, i64 2056, !11, i64 2064, !11, i64 2072, !11, i64 2080}
!32 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560, !7, i64 576, !7, i64 592, !7, i64 608, !7, i64 624, !7, i64 640, !7, i64 656, !7, i64 672, !7, i64 688, !7, i64 704, !7, i64 720}
!33 = !{!11, !11, i64 0}
!34 = !{!31, !11, i64 2008}
!35 = distinct !{!35, !36}
!36 = !{!"llvm.loop.mustprogress"}
!37 = !{!17, !11, i64 1520}
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
