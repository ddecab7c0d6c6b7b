; Made by scripts/lanes.py from sources of sha256 a914d89fe7888f029b37948d37bbbc35dcd42e268cd2200101962708cd0935e2.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <2 x double>], [14 x <2 x double>], [14 x <2 x double>], <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, %struct.Flash, <2 x double>, <2 x i64>, <2 x i64>, <2 x i64>, i64, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [8 x i8] }>
%struct.PieceGiven = type { <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double> }
%struct.Flash = type { <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double> }

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
  %12 = add i64 %11, 2832
  %13 = mul i64 %12, %10
  %14 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %15 = load i64, ptr %14, align 8, !tbaa !15
  %16 = shl i64 %15, 4
  %17 = add i64 %16, 1664
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
  br i1 %6, label %122, label %7

7:                                                ; preds = %3
  %8 = getelementptr inbounds nuw i8, ptr %0, i64 8
  %9 = load i64, ptr %8, align 8, !tbaa !14
  %10 = getelementptr inbounds nuw i8, ptr %1, i64 576
  store i64 %9, ptr %10, align 16, !tbaa !16
  %11 = getelementptr inbounds nuw i8, ptr %1, i64 584
  store i64 %9, ptr %11, align 8, !tbaa !20
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %13 = load i64, ptr %12, align 8, !tbaa !4
  %14 = getelementptr inbounds nuw i8, ptr %1, i64 592
  store i64 %13, ptr %14, align 16, !tbaa !21
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %16 = load i64, ptr %15, align 8, !tbaa !13
  %17 = getelementptr inbounds nuw i8, ptr %1, i64 600
  store i64 %16, ptr %17, align 8, !tbaa !22
  %18 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %19 = load i64, ptr %18, align 8, !tbaa !23
  %20 = getelementptr inbounds nuw i8, ptr %1, i64 608
  store i64 %19, ptr %20, align 16, !tbaa !24
  %21 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %22 = load double, ptr %21, align 8, !tbaa !25
  %23 = insertelement <2 x double> poison, double %22, i64 0
  %24 = shufflevector <2 x double> %23, <2 x double> poison, <2 x i32> zeroinitializer
  %25 = getelementptr inbounds nuw i8, ptr %1, i64 624
  store <2 x double> %24, ptr %25, align 16, !tbaa !26
  %26 = getelementptr inbounds nuw i8, ptr %1, i64 616
  store i64 0, ptr %26, align 8, !tbaa !27
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 1584
  %28 = getelementptr inbounds nuw i8, ptr %1, i64 1576
  store ptr %27, ptr %28, align 8, !tbaa !28
  %29 = getelementptr inbounds %struct.Piece, ptr %27, i64 %9
  %30 = icmp sgt i64 %9, 0
  br i1 %30, label %31, label %105

31:                                               ; preds = %7
  %32 = getelementptr inbounds nuw i8, ptr %0, i64 152
  %33 = add nsw i64 %13, 1
  br label %34

34:                                               ; preds = %34, %31
  %35 = phi ptr [ %29, %31 ], [ %102, %34 ]
  %36 = phi i64 [ 0, %31 ], [ %103, %34 ]
  %37 = load ptr, ptr %28, align 8, !tbaa !28
  %38 = getelementptr inbounds nuw %struct.Piece, ptr %37, i64 %36
  %39 = load ptr, ptr %32, align 8, !tbaa !29
  %40 = getelementptr inbounds nuw i64, ptr %39, i64 %36
  %41 = load i64, ptr %40, align 8, !tbaa !30
  %42 = getelementptr inbounds nuw i8, ptr %38, i64 2128
  store i64 %41, ptr %42, align 16, !tbaa !31
  %43 = getelementptr inbounds nuw i8, ptr %38, i64 2136
  %44 = getelementptr inbounds nuw i8, ptr %38, i64 2144
  %45 = getelementptr inbounds nuw i8, ptr %38, i64 2152
  %46 = getelementptr inbounds nuw i8, ptr %38, i64 2160
  %47 = getelementptr inbounds nuw i8, ptr %38, i64 2168
  %48 = getelementptr inbounds nuw i8, ptr %38, i64 2176
  %49 = getelementptr inbounds nuw i8, ptr %38, i64 2184
  %50 = getelementptr inbounds nuw i8, ptr %38, i64 2192
  %51 = getelementptr inbounds nuw i8, ptr %38, i64 2200
  %52 = getelementptr inbounds nuw i8, ptr %38, i64 2208
  %53 = getelementptr inbounds nuw i8, ptr %38, i64 2216
  %54 = getelementptr inbounds nuw i8, ptr %38, i64 2224
  %55 = getelementptr inbounds nuw i8, ptr %38, i64 2232
  %56 = getelementptr inbounds nuw i8, ptr %38, i64 2240
  store ptr %35, ptr %43, align 8, !tbaa !35
  %57 = getelementptr inbounds <2 x double>, ptr %35, i64 %13
  store ptr %57, ptr %44, align 8, !tbaa !35
  %58 = getelementptr inbounds <2 x double>, ptr %57, i64 %13
  store ptr %58, ptr %45, align 8, !tbaa !35
  %59 = getelementptr inbounds <2 x double>, ptr %58, i64 %13
  store ptr %59, ptr %46, align 8, !tbaa !35
  %60 = getelementptr inbounds <2 x double>, ptr %59, i64 %13
  store ptr %60, ptr %47, align 8, !tbaa !35
  %61 = getelementptr inbounds <2 x double>, ptr %60, i64 %13
  store ptr %61, ptr %48, align 8, !tbaa !35
  %62 = getelementptr inbounds <2 x double>, ptr %61, i64 %13
  store ptr %62, ptr %49, align 8, !tbaa !35
  %63 = getelementptr inbounds <2 x double>, ptr %62, i64 %13
  store ptr %63, ptr %50, align 8, !tbaa !35
  %64 = getelementptr inbounds <2 x double>, ptr %63, i64 %13
  store ptr %64, ptr %51, align 8, !tbaa !35
  %65 = getelementptr inbounds <2 x double>, ptr %64, i64 %13
  store ptr %65, ptr %52, align 8, !tbaa !35
  %66 = getelementptr inbounds <2 x double>, ptr %65, i64 %13
  store ptr %66, ptr %53, align 8, !tbaa !35
  %67 = getelementptr inbounds <2 x double>, ptr %66, i64 %13
  store ptr %67, ptr %54, align 8, !tbaa !35
  %68 = getelementptr inbounds <2 x double>, ptr %67, i64 %13
  store ptr %68, ptr %55, align 8, !tbaa !35
  %69 = getelementptr inbounds <2 x double>, ptr %68, i64 %13
  store ptr %69, ptr %56, align 8, !tbaa !35
  %70 = getelementptr inbounds <2 x double>, ptr %69, i64 %13
  %71 = getelementptr inbounds nuw i8, ptr %38, i64 2248
  store ptr %70, ptr %71, align 8, !tbaa !36
  %72 = icmp eq i64 %41, 0
  %73 = select i1 %72, i64 0, i64 2
  %74 = shl i64 %33, %73
  %75 = getelementptr inbounds <2 x double>, ptr %70, i64 %74
  %76 = getelementptr inbounds nuw i8, ptr %38, i64 2256
  %77 = getelementptr inbounds nuw i8, ptr %38, i64 2264
  %78 = getelementptr inbounds nuw i8, ptr %38, i64 2272
  %79 = getelementptr inbounds nuw i8, ptr %38, i64 2280
  %80 = getelementptr inbounds nuw i8, ptr %38, i64 2288
  %81 = getelementptr inbounds nuw i8, ptr %38, i64 2296
  %82 = getelementptr inbounds nuw i8, ptr %38, i64 2304
  %83 = getelementptr inbounds nuw i8, ptr %38, i64 2312
  %84 = getelementptr inbounds nuw i8, ptr %38, i64 2320
  store ptr %75, ptr %76, align 8, !tbaa !35
  %85 = getelementptr <2 x double>, ptr %75, i64 %16
  %86 = getelementptr i8, ptr %85, i64 16
  store ptr %86, ptr %77, align 8, !tbaa !35
  %87 = getelementptr <2 x double>, ptr %86, i64 %16
  %88 = getelementptr i8, ptr %87, i64 16
  store ptr %88, ptr %78, align 8, !tbaa !35
  %89 = getelementptr <2 x double>, ptr %88, i64 %16
  %90 = getelementptr i8, ptr %89, i64 16
  store ptr %90, ptr %79, align 8, !tbaa !35
  %91 = getelementptr <2 x double>, ptr %90, i64 %16
  %92 = getelementptr i8, ptr %91, i64 16
  store ptr %92, ptr %80, align 8, !tbaa !35
  %93 = getelementptr <2 x double>, ptr %92, i64 %16
  %94 = getelementptr i8, ptr %93, i64 16
  store ptr %94, ptr %81, align 8, !tbaa !35
  %95 = getelementptr <2 x double>, ptr %94, i64 %16
  %96 = getelementptr i8, ptr %95, i64 16
  store ptr %96, ptr %82, align 8, !tbaa !35
  %97 = getelementptr <2 x double>, ptr %96, i64 %16
  %98 = getelementptr i8, ptr %97, i64 16
  store ptr %98, ptr %83, align 8, !tbaa !35
  %99 = getelementptr <2 x double>, ptr %98, i64 %16
  %100 = getelementptr i8, ptr %99, i64 16
  store ptr %100, ptr %84, align 8, !tbaa !35
  %101 = getelementptr <2 x double>, ptr %100, i64 %16
  %102 = getelementptr i8, ptr %101, i64 16
  %103 = add nuw nsw i64 %36, 1
  %104 = icmp eq i64 %103, %9
  br i1 %104, label %105, label %34, !llvm.loop !37

105:                                              ; preds = %34, %7
  %106 = phi ptr [ %29, %7 ], [ %102, %34 ]
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 1568
  store ptr %106, ptr %107, align 16, !tbaa !39
  %108 = load i64, ptr %0, align 8, !tbaa !40
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %111

110:                                              ; preds = %105
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %114

111:                                              ; preds = %105
  %112 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %113 = getelementptr inbounds nuw i8, ptr %1, i64 1392
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  store i64 0, ptr %113, align 8, !tbaa !30
  store i64 0, ptr %112, align 8, !tbaa !30
  br label %114

114:                                              ; preds = %111, %110
  %115 = load i64, ptr %26, align 8, !tbaa !27
  %116 = load i64, ptr %0, align 8, !tbaa !40
  %117 = icmp slt i64 %115, %116
  br i1 %117, label %121, label %118

118:                                              ; preds = %114
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, i64 noundef 0) #7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 1400
  store i64 0, ptr %119, align 8, !tbaa !30
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 1416
  store i64 0, ptr %120, align 8, !tbaa !30
  br label %122

121:                                              ; preds = %114
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %122

122:                                              ; preds = %118, %121, %3
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 1392
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %126 = load i64, ptr %124, align 8, !tbaa !41
  %127 = load i64, ptr %125, align 8, !tbaa !42
  %128 = sub nsw i64 %126, %127
  %129 = icmp slt i64 %128, 4
  br i1 %129, label %5786, label %130

130:                                              ; preds = %122
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 1552
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 592
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 600
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 1136
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 1168
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 1232
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 1312
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 1576
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %144 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 616
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 480
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 496
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 976
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 1280
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 416
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 1072
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 16
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 32
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 1008
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 1440
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 1456
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 584
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 1056
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 1120
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 1264
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 992
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 1248
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 944
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 352
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 368
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 1328
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 528
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 400
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 304
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 288
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 224
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 240
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 208
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 272
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 1184
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 1344
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 608
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 624
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 1200
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 432
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 1296
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 1104
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 464
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 1568
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 1040
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 1488
  %229 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %230 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %231 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %232 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 544
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 1560
  br label %265

265:                                              ; preds = %522, %130
  %266 = phi i1 [ true, %130 ], [ %525, %522 ]
  %267 = phi i64 [ 0, %130 ], [ %523, %522 ]
  %268 = phi i1 [ true, %130 ], [ %524, %522 ]
  %269 = getelementptr inbounds nuw i64, ptr %123, i64 %267
  %270 = load i64, ptr %269, align 8, !tbaa !30
  %271 = icmp eq i64 %270, 0
  br i1 %271, label %520, label %272

272:                                              ; preds = %265
  %273 = getelementptr inbounds nuw [2 x double], ptr %131, i64 0, i64 %267
  %274 = load double, ptr %273, align 8, !tbaa !43
  %275 = fcmp oeq double %274, 0.000000e+00
  br i1 %275, label %520, label %276

276:                                              ; preds = %272
  %277 = load i64, ptr %132, align 16, !tbaa !21
  %278 = load i64, ptr %133, align 8, !tbaa !22
  %279 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %267
  %280 = load i64, ptr %279, align 8, !tbaa !30
  %281 = load ptr, ptr %135, align 8, !tbaa !44
  %282 = mul nsw i64 %280, 40
  %283 = getelementptr inbounds i8, ptr %281, i64 %282
  %284 = getelementptr inbounds nuw double, ptr %136, i64 %267
  %285 = load double, ptr %284, align 8, !tbaa !43
  store double %285, ptr %283, align 8, !tbaa !43
  %286 = getelementptr inbounds nuw double, ptr %137, i64 %267
  %287 = load double, ptr %286, align 8, !tbaa !43
  %288 = getelementptr inbounds nuw i8, ptr %283, i64 8
  store double %287, ptr %288, align 8, !tbaa !43
  %289 = getelementptr inbounds nuw double, ptr %138, i64 %267
  %290 = load double, ptr %289, align 8, !tbaa !43
  %291 = getelementptr inbounds nuw i8, ptr %283, i64 16
  store double %290, ptr %291, align 8, !tbaa !43
  %292 = getelementptr inbounds nuw double, ptr %139, i64 %267
  %293 = load double, ptr %292, align 8, !tbaa !43
  %294 = getelementptr inbounds nuw i8, ptr %283, i64 24
  store double %293, ptr %294, align 8, !tbaa !43
  %295 = getelementptr inbounds nuw double, ptr %140, i64 %267
  %296 = load double, ptr %295, align 8, !tbaa !43
  %297 = getelementptr inbounds nuw i8, ptr %283, i64 32
  store double %296, ptr %297, align 8, !tbaa !43
  %298 = load i64, ptr %141, align 16, !tbaa !16
  %299 = icmp sgt i64 %298, 0
  br i1 %299, label %300, label %504

300:                                              ; preds = %276
  %301 = load ptr, ptr %142, align 8, !tbaa !28
  %302 = load ptr, ptr %143, align 8, !tbaa !45
  %303 = mul nsw i64 %298, %280
  %304 = mul i64 %277, 3
  %305 = load ptr, ptr %144, align 8, !tbaa !46
  %306 = icmp sgt i64 %277, 0
  %307 = getelementptr inbounds nuw double, ptr %4, i64 %267
  %308 = shl i64 %277, 4
  %309 = getelementptr inbounds nuw double, ptr %5, i64 %267
  %310 = icmp sgt i64 %278, 0
  %311 = and i64 %278, 1
  %312 = icmp eq i64 %278, 1
  %313 = and i64 %278, 9223372036854775806
  %314 = icmp eq i64 %311, 0
  br label %315

315:                                              ; preds = %412, %300
  %316 = phi i64 [ 0, %300 ], [ %479, %412 ]
  %317 = getelementptr inbounds nuw %struct.Piece, ptr %301, i64 %316
  %318 = getelementptr inbounds nuw i8, ptr %317, i64 384
  %319 = getelementptr inbounds nuw double, ptr %318, i64 %267
  %320 = load double, ptr %319, align 8, !tbaa !43
  %321 = getelementptr inbounds nuw i8, ptr %317, i64 1152
  %322 = getelementptr inbounds nuw double, ptr %321, i64 %267
  %323 = load double, ptr %322, align 8, !tbaa !43
  %324 = add nsw i64 %316, %303
  %325 = mul i64 %304, %324
  %326 = getelementptr inbounds double, ptr %302, i64 %325
  %327 = mul nsw i64 %324, 40
  %328 = getelementptr inbounds i8, ptr %305, i64 %327
  br i1 %306, label %329, label %346

329:                                              ; preds = %315
  %330 = getelementptr inbounds nuw i8, ptr %317, i64 2144
  %331 = load ptr, ptr %330, align 16, !tbaa !47
  %332 = getelementptr inbounds nuw i8, ptr %317, i64 2176
  %333 = load ptr, ptr %332, align 16, !tbaa !48
  %334 = getelementptr inbounds nuw double, ptr %333, i64 %267
  %335 = getelementptr double, ptr %326, i64 %277
  %336 = getelementptr inbounds nuw i8, ptr %317, i64 1168
  %337 = getelementptr inbounds nuw i8, ptr %317, i64 2232
  %338 = load ptr, ptr %337, align 8, !tbaa !49
  %339 = getelementptr inbounds nuw i8, ptr %317, i64 2128
  %340 = load i64, ptr %339, align 16, !tbaa !31
  %341 = getelementptr inbounds nuw i8, ptr %317, i64 96
  %342 = getelementptr inbounds nuw i8, ptr %317, i64 112
  %343 = getelementptr inbounds nuw i8, ptr %317, i64 128
  %344 = getelementptr inbounds nuw i8, ptr %317, i64 160
  %345 = getelementptr i8, ptr %326, i64 %308
  br label %359

346:                                              ; preds = %388, %315
  %347 = phi double [ %323, %315 ], [ %395, %388 ]
  br i1 %310, label %348, label %412

348:                                              ; preds = %346
  %349 = getelementptr inbounds nuw i8, ptr %317, i64 2312
  %350 = load ptr, ptr %349, align 8, !tbaa !50
  %351 = getelementptr inbounds nuw double, ptr %350, i64 %267
  %352 = getelementptr inbounds nuw i8, ptr %317, i64 192
  %353 = getelementptr inbounds nuw double, ptr %352, i64 %267
  %354 = load double, ptr %353, align 8, !tbaa !43
  %355 = getelementptr inbounds nuw i8, ptr %317, i64 2264
  %356 = load ptr, ptr %355, align 8, !tbaa !51
  %357 = getelementptr inbounds nuw double, ptr %356, i64 %267
  %358 = load double, ptr %351, align 8, !tbaa !43
  br i1 %312, label %398, label %481

359:                                              ; preds = %388, %329
  %360 = phi double [ %323, %329 ], [ %395, %388 ]
  %361 = phi i64 [ 0, %329 ], [ %396, %388 ]
  %362 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 %361
  %363 = getelementptr inbounds nuw double, ptr %362, i64 %267
  %364 = load double, ptr %363, align 8, !tbaa !43
  %365 = getelementptr inbounds nuw double, ptr %326, i64 %361
  store double %364, ptr %365, align 8, !tbaa !43
  %366 = getelementptr inbounds nuw <2 x double>, ptr %334, i64 %361
  %367 = load double, ptr %366, align 8, !tbaa !43
  %368 = getelementptr double, ptr %335, i64 %361
  store double %367, ptr %368, align 8, !tbaa !43
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  %369 = load <2 x double>, ptr %336, align 16, !tbaa !26
  %370 = getelementptr inbounds nuw <2 x double>, ptr %338, i64 %361
  %371 = load <2 x double>, ptr %370, align 16, !tbaa !26
  %372 = icmp slt i64 %361, %340
  %373 = load <2 x double>, ptr %318, align 16
  %374 = fsub <2 x double> %369, %373
  %375 = select i1 %372, <2 x double> %373, <2 x double> %374
  %376 = fmul <2 x double> %371, %375
  store <2 x double> %376, ptr %4, align 16, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %5) #8
  %377 = load <2 x double>, ptr %362, align 16, !tbaa !26
  br i1 %372, label %378, label %380

378:                                              ; preds = %359
  %379 = load <2 x double>, ptr %344, align 16, !tbaa !26
  br label %388

380:                                              ; preds = %359
  %381 = load <2 x double>, ptr %341, align 16, !tbaa !26
  %382 = load <2 x double>, ptr %342, align 16, !tbaa !26
  %383 = load <2 x double>, ptr %343, align 16, !tbaa !26
  %384 = fmul <2 x double> %377, %383
  %385 = fmul <2 x double> %384, splat (double 0x3FD5555555555555)
  %386 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %382, <2 x double> splat (double 5.000000e-01), <2 x double> %385)
  %387 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %377, <2 x double> %386, <2 x double> %381)
  br label %388

388:                                              ; preds = %380, %378
  %389 = phi <2 x double> [ %379, %378 ], [ %387, %380 ]
  %390 = fmul <2 x double> %377, %389
  %391 = fmul <2 x double> %376, %390
  store <2 x double> %391, ptr %5, align 16, !tbaa !26
  %392 = load double, ptr %307, align 8, !tbaa !43
  %393 = getelementptr double, ptr %345, i64 %361
  store double %392, ptr %393, align 8, !tbaa !43
  %394 = load double, ptr %309, align 8, !tbaa !43
  %395 = fadd double %360, %394
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #8
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  %396 = add nuw nsw i64 %361, 1
  %397 = icmp eq i64 %396, %277
  br i1 %397, label %346, label %359, !llvm.loop !52

398:                                              ; preds = %481, %348
  %399 = phi double [ poison, %348 ], [ %501, %481 ]
  %400 = phi double [ %358, %348 ], [ %496, %481 ]
  %401 = phi double [ %347, %348 ], [ %501, %481 ]
  %402 = phi i64 [ 0, %348 ], [ %494, %481 ]
  br i1 %314, label %412, label %403

403:                                              ; preds = %398
  %404 = getelementptr <2 x double>, ptr %351, i64 %402
  %405 = getelementptr i8, ptr %404, i64 16
  %406 = load double, ptr %405, align 8, !tbaa !43
  %407 = fsub double %406, %400
  %408 = fmul double %354, %407
  %409 = getelementptr inbounds nuw <2 x double>, ptr %357, i64 %402
  %410 = load double, ptr %409, align 8, !tbaa !43
  %411 = tail call double @llvm.fmuladd.f64(double %408, double %410, double %401)
  br label %412

412:                                              ; preds = %403, %398, %346
  %413 = phi double [ %347, %346 ], [ %399, %398 ], [ %411, %403 ]
  %414 = getelementptr inbounds nuw i8, ptr %317, i64 240
  %415 = getelementptr inbounds nuw double, ptr %414, i64 %267
  %416 = load double, ptr %415, align 8, !tbaa !43
  %417 = getelementptr inbounds nuw i8, ptr %317, i64 96
  %418 = getelementptr inbounds nuw double, ptr %417, i64 %267
  %419 = load double, ptr %418, align 8, !tbaa !43
  %420 = getelementptr inbounds nuw i8, ptr %317, i64 112
  %421 = getelementptr inbounds nuw double, ptr %420, i64 %267
  %422 = load double, ptr %421, align 8, !tbaa !43
  %423 = getelementptr inbounds nuw i8, ptr %317, i64 128
  %424 = getelementptr inbounds nuw double, ptr %423, i64 %267
  %425 = load double, ptr %424, align 8, !tbaa !43
  %426 = fmul double %416, %425
  %427 = fdiv double %426, 3.000000e+00
  %428 = tail call double @llvm.fmuladd.f64(double %422, double 5.000000e-01, double %427)
  %429 = tail call double @llvm.fmuladd.f64(double %416, double %428, double %419)
  %430 = fmul double %416, %429
  %431 = getelementptr inbounds nuw i8, ptr %317, i64 352
  %432 = getelementptr inbounds nuw double, ptr %431, i64 %267
  %433 = load double, ptr %432, align 8, !tbaa !43
  %434 = fsub double %433, %320
  %435 = getelementptr inbounds nuw i8, ptr %317, i64 160
  %436 = getelementptr inbounds nuw double, ptr %435, i64 %267
  %437 = load double, ptr %436, align 8, !tbaa !43
  %438 = fmul double %320, %437
  %439 = fmul double %416, %438
  %440 = tail call double @llvm.fmuladd.f64(double %434, double %430, double %439)
  %441 = getelementptr inbounds nuw i8, ptr %317, i64 1056
  %442 = getelementptr inbounds nuw double, ptr %441, i64 %267
  %443 = load double, ptr %442, align 8, !tbaa !43
  %444 = getelementptr inbounds nuw i8, ptr %317, i64 1072
  %445 = getelementptr inbounds nuw double, ptr %444, i64 %267
  %446 = load double, ptr %445, align 8, !tbaa !43
  %447 = fsub double %443, %446
  %448 = fsub double %413, %440
  %449 = fsub double %447, %448
  %450 = fcmp ogt double %443, 0.000000e+00
  %451 = fneg double %443
  %452 = select i1 %450, double %443, double %451
  %453 = fcmp ogt double %446, 0.000000e+00
  %454 = fneg double %446
  %455 = select i1 %453, double %446, double %454
  %456 = fadd double %452, %455
  %457 = fcmp ogt double %449, 0.000000e+00
  %458 = fneg double %449
  %459 = select i1 %457, double %449, double %458
  %460 = fcmp ogt double %456, 1.000000e+00
  %461 = select i1 %460, double %456, double 1.000000e+00
  %462 = fdiv double %459, %461
  store double %462, ptr %328, align 8, !tbaa !43
  %463 = getelementptr inbounds nuw i8, ptr %317, i64 1040
  %464 = getelementptr inbounds nuw double, ptr %463, i64 %267
  %465 = load double, ptr %464, align 8, !tbaa !43
  %466 = getelementptr inbounds nuw i8, ptr %328, i64 8
  store double %465, ptr %466, align 8, !tbaa !43
  %467 = getelementptr inbounds nuw i8, ptr %317, i64 992
  %468 = getelementptr inbounds nuw double, ptr %467, i64 %267
  %469 = load double, ptr %468, align 8, !tbaa !43
  %470 = getelementptr inbounds nuw i8, ptr %328, i64 16
  store double %469, ptr %470, align 8, !tbaa !43
  %471 = getelementptr inbounds nuw i8, ptr %317, i64 1008
  %472 = getelementptr inbounds nuw double, ptr %471, i64 %267
  %473 = load double, ptr %472, align 8, !tbaa !43
  %474 = getelementptr inbounds nuw i8, ptr %328, i64 24
  store double %473, ptr %474, align 8, !tbaa !43
  %475 = getelementptr inbounds nuw i8, ptr %317, i64 976
  %476 = getelementptr inbounds nuw double, ptr %475, i64 %267
  %477 = load double, ptr %476, align 8, !tbaa !43
  %478 = getelementptr inbounds nuw i8, ptr %328, i64 32
  store double %477, ptr %478, align 8, !tbaa !43
  %479 = add nuw nsw i64 %316, 1
  %480 = icmp eq i64 %479, %298
  br i1 %480, label %504, label %315, !llvm.loop !53

481:                                              ; preds = %348, %481
  %482 = phi double [ %496, %481 ], [ %358, %348 ]
  %483 = phi double [ %501, %481 ], [ %347, %348 ]
  %484 = phi i64 [ %494, %481 ], [ 0, %348 ]
  %485 = phi i64 [ %502, %481 ], [ 0, %348 ]
  %486 = or disjoint i64 %484, 1
  %487 = getelementptr inbounds nuw <2 x double>, ptr %351, i64 %486
  %488 = load double, ptr %487, align 8, !tbaa !43
  %489 = fsub double %488, %482
  %490 = fmul double %354, %489
  %491 = getelementptr inbounds nuw <2 x double>, ptr %357, i64 %484
  %492 = load double, ptr %491, align 8, !tbaa !43
  %493 = tail call double @llvm.fmuladd.f64(double %490, double %492, double %483)
  %494 = add nuw nsw i64 %484, 2
  %495 = getelementptr inbounds nuw <2 x double>, ptr %351, i64 %494
  %496 = load double, ptr %495, align 8, !tbaa !43
  %497 = fsub double %496, %488
  %498 = fmul double %354, %497
  %499 = getelementptr inbounds nuw <2 x double>, ptr %357, i64 %486
  %500 = load double, ptr %499, align 8, !tbaa !43
  %501 = tail call double @llvm.fmuladd.f64(double %498, double %500, double %493)
  %502 = add i64 %485, 2
  %503 = icmp eq i64 %502, %313
  br i1 %503, label %398, label %481, !llvm.loop !54

504:                                              ; preds = %412, %276
  %505 = load i64, ptr %145, align 8, !tbaa !27
  %506 = load i64, ptr %0, align 8, !tbaa !40
  %507 = icmp slt i64 %505, %506
  br i1 %507, label %510, label %508

508:                                              ; preds = %504
  store i64 0, ptr %269, align 8, !tbaa !30
  %509 = getelementptr inbounds nuw i64, ptr %146, i64 %267
  store i64 0, ptr %509, align 8, !tbaa !30
  br label %517

510:                                              ; preds = %504
  %511 = trunc nuw nsw i64 %267 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %511) #7
  %512 = load i64, ptr %269, align 8, !tbaa !30
  %513 = icmp eq i64 %512, 0
  br i1 %513, label %517, label %514

514:                                              ; preds = %510
  %515 = load double, ptr %273, align 8, !tbaa !43
  %516 = fcmp oeq double %515, 0.000000e+00
  br label %517

517:                                              ; preds = %508, %514, %510
  %518 = phi i1 [ true, %510 ], [ %516, %514 ], [ true, %508 ]
  %519 = and i1 %268, %518
  br label %520

520:                                              ; preds = %517, %272, %265
  %521 = phi i1 [ %268, %272 ], [ %519, %517 ], [ %268, %265 ]
  br i1 %266, label %522, label %526

522:                                              ; preds = %520, %527
  %523 = phi i64 [ 1, %520 ], [ 0, %527 ]
  %524 = phi i1 [ %521, %520 ], [ true, %527 ]
  %525 = xor i1 %266, true
  br label %265, !llvm.loop !55

526:                                              ; preds = %520
  br i1 %521, label %532, label %527

527:                                              ; preds = %5767, %5785, %5782, %3950, %4293, %526
  %528 = load i64, ptr %124, align 8, !tbaa !41
  %529 = load i64, ptr %125, align 8, !tbaa !42
  %530 = sub nsw i64 %528, %529
  %531 = icmp slt i64 %530, 4
  br i1 %531, label %5786, label %522

532:                                              ; preds = %526
  %533 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %534 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %533)
  %535 = icmp eq i64 %534, 0
  br i1 %535, label %5786, label %536

536:                                              ; preds = %532
  %537 = load <2 x i64>, ptr %146, align 16, !tbaa !26
  %538 = and <2 x i64> %537, %533
  %539 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %538)
  %540 = icmp eq i64 %539, 0
  %541 = load i64, ptr %169, align 8, !tbaa !20
  br i1 %540, label %1467, label %542

542:                                              ; preds = %536
  %543 = load <2 x double>, ptr %147, align 16, !tbaa !26
  %544 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %545 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %546 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %547 = fsub <2 x double> %545, %546
  %548 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %544, <2 x double> %547, <2 x double> %543)
  %549 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %550 = fcmp une <2 x double> %549, splat (double 2.000000e+00)
  %551 = select <2 x i1> %550, <2 x double> splat (double 1.000000e+00), <2 x double> splat (double 5.000000e-01)
  %552 = fmul <2 x double> %548, %551
  %553 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %554 = load <2 x double>, ptr %153, align 16, !tbaa !26
  %555 = fcmp olt <2 x double> %553, %554
  %556 = select <2 x i1> %555, <2 x double> %553, <2 x double> %554
  %557 = fcmp olt <2 x double> %556, %552
  %558 = select <2 x i1> %557, <2 x double> %556, <2 x double> %552
  %559 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %560 = fmul <2 x double> %559, splat (double 5.000000e-01)
  %561 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %562 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %563 = fneg <2 x double> %560
  %564 = icmp eq <2 x i64> %562, zeroinitializer
  %565 = select <2 x i1> %564, <2 x double> %563, <2 x double> %560
  %566 = fadd <2 x double> %561, %565
  %567 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %568 = fsub <2 x double> %566, %567
  %569 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %570 = select <2 x i1> %564, <2 x double> zeroinitializer, <2 x double> %569
  %571 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %572 = fsub <2 x double> %570, %571
  %573 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %574 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %575 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %576 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %575, <2 x double> %567, <2 x double> %574)
  %577 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %578 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %573, <2 x double> %576, <2 x double> %577)
  %579 = fdiv <2 x double> %572, %578
  %580 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %581 = fsub <2 x double> %567, %580
  %582 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %583 = fdiv <2 x double> %581, %582
  %584 = fsub <2 x double> %579, %583
  %585 = fdiv <2 x double> %584, %582
  %586 = fdiv <2 x double> %568, %579
  %587 = load <2 x i64>, ptr %165, align 16, !tbaa !26
  %588 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %589 = or <2 x i64> %588, %587
  %590 = icmp eq <2 x i64> %589, zeroinitializer
  %591 = select <2 x i1> %590, <2 x double> %585, <2 x double> zeroinitializer
  %592 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %591, <2 x double> %586, <2 x double> %579)
  %593 = fdiv <2 x double> %568, %592
  %594 = fcmp ule <2 x double> %593, zeroinitializer
  %595 = select <2 x i1> %594, <2 x double> %586, <2 x double> %593
  %596 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %597 = fcmp une <2 x double> %596, zeroinitializer
  %598 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %599 = fcmp une <2 x double> %598, zeroinitializer
  %600 = fcmp ule <2 x double> %569, zeroinitializer
  %601 = or <2 x i1> %600, %597
  %602 = fcmp ule <2 x double> %586, zeroinitializer
  %603 = or <2 x i1> %602, %601
  %604 = or <2 x i1> %599, %603
  %605 = select <2 x i1> %604, <2 x double> splat (double 1.000000e+09), <2 x double> %595
  %606 = icmp sgt i64 %541, 0
  br i1 %606, label %607, label %672

607:                                              ; preds = %542
  %608 = load ptr, ptr %142, align 8, !tbaa !28
  %609 = fmul <2 x double> %582, splat (double 3.000000e+00)
  br label %610

610:                                              ; preds = %607, %610
  %611 = phi <2 x double> [ %605, %607 ], [ %669, %610 ]
  %612 = phi i64 [ 0, %607 ], [ %670, %610 ]
  %613 = getelementptr inbounds nuw %struct.Piece, ptr %608, i64 %612
  %614 = getelementptr inbounds nuw i8, ptr %613, i64 976
  %615 = load <2 x double>, ptr %614, align 16, !tbaa !26
  %616 = getelementptr inbounds nuw i8, ptr %613, i64 368
  %617 = load <2 x double>, ptr %616, align 16, !tbaa !26
  %618 = fsub <2 x double> %615, %617
  %619 = getelementptr inbounds nuw i8, ptr %613, i64 208
  %620 = load <2 x double>, ptr %619, align 16, !tbaa !26
  %621 = fmul <2 x double> %618, %620
  %622 = getelementptr inbounds nuw i8, ptr %613, i64 400
  %623 = load <2 x double>, ptr %622, align 16, !tbaa !26
  %624 = getelementptr inbounds nuw i8, ptr %613, i64 1040
  %625 = load <2 x double>, ptr %624, align 16, !tbaa !26
  %626 = fsub <2 x double> %623, %625
  %627 = getelementptr inbounds nuw i8, ptr %613, i64 2080
  %628 = load <2 x i64>, ptr %627, align 16, !tbaa !26
  %629 = getelementptr inbounds nuw i8, ptr %613, i64 1920
  %630 = load <2 x double>, ptr %629, align 16, !tbaa !26
  %631 = fcmp une <2 x double> %630, splat (double 1.000000e+00)
  %632 = select <2 x i1> %631, <2 x double> %621, <2 x double> %626
  %633 = getelementptr inbounds nuw i8, ptr %613, i64 992
  %634 = load <2 x double>, ptr %633, align 16, !tbaa !26
  %635 = icmp eq <2 x i64> %628, zeroinitializer
  %636 = select <2 x i1> %635, <2 x double> %634, <2 x double> %632
  %637 = getelementptr inbounds nuw i8, ptr %613, i64 1504
  %638 = load <2 x double>, ptr %637, align 16, !tbaa !26
  %639 = getelementptr inbounds nuw i8, ptr %613, i64 1888
  %640 = load <2 x double>, ptr %639, align 16, !tbaa !26
  %641 = fdiv <2 x double> %640, %582
  %642 = select <2 x i1> %635, <2 x double> %641, <2 x double> zeroinitializer
  %643 = fsub <2 x double> %638, %642
  %644 = fdiv <2 x double> %636, %643
  %645 = getelementptr inbounds nuw i8, ptr %613, i64 1216
  %646 = load <2 x double>, ptr %645, align 16, !tbaa !26
  %647 = fsub <2 x double> %646, %634
  %648 = fdiv <2 x double> %647, %582
  %649 = getelementptr inbounds nuw i8, ptr %613, i64 2096
  %650 = load <2 x i64>, ptr %649, align 16, !tbaa !26
  %651 = or <2 x i64> %650, %628
  %652 = fcmp ule <2 x double> %644, %609
  %653 = fsub <2 x double> %643, %648
  %654 = icmp eq <2 x i64> %651, zeroinitializer
  %655 = select <2 x i1> %652, <2 x i1> %654, <2 x i1> zeroinitializer
  %656 = select <2 x i1> %655, <2 x double> %653, <2 x double> zeroinitializer
  %657 = fdiv <2 x double> %644, %582
  %658 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %656, <2 x double> %657, <2 x double> %643)
  %659 = fdiv <2 x double> %636, %658
  %660 = fcmp ule <2 x double> %659, zeroinitializer
  %661 = select <2 x i1> %660, <2 x double> %644, <2 x double> %659
  %662 = fcmp ule <2 x double> %636, zeroinitializer
  %663 = fcmp ule <2 x double> %643, zeroinitializer
  %664 = or <2 x i1> %662, %663
  %665 = fcmp ogt <2 x double> %661, splat (double 1.000000e-03)
  %666 = select <2 x i1> %665, <2 x double> %661, <2 x double> splat (double 1.000000e-03)
  %667 = select <2 x i1> %664, <2 x double> splat (double 1.000000e+09), <2 x double> %666
  %668 = fcmp olt <2 x double> %611, %667
  %669 = select <2 x i1> %668, <2 x double> %611, <2 x double> %667
  %670 = add nuw nsw i64 %612, 1
  %671 = icmp eq i64 %670, %541
  br i1 %671, label %672, label %610, !llvm.loop !56

672:                                              ; preds = %610, %542
  %673 = phi <2 x double> [ %605, %542 ], [ %669, %610 ]
  %674 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %675 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %676 = fadd <2 x double> %674, %675
  %677 = fsub <2 x double> %676, %545
  %678 = fmul <2 x double> %673, splat (double 1.050000e+00)
  %679 = fcmp ugt <2 x double> %677, %678
  %680 = select <2 x i1> %679, <2 x double> %673, <2 x double> %677
  %681 = fmul <2 x double> %558, splat (double 0x3FF000010C6F7A0B)
  %682 = fcmp ole <2 x double> %680, %681
  %683 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %684 = fcmp ogt <2 x double> %683, %558
  %685 = select <2 x i1> %684, <2 x double> %683, <2 x double> %558
  %686 = icmp ne <2 x i64> %538, zeroinitializer
  %687 = select <2 x i1> %682, <2 x i1> %686, <2 x i1> zeroinitializer
  %688 = select <2 x i1> %687, <2 x double> %685, <2 x double> %683
  store <2 x double> %688, ptr %172, align 16, !tbaa !26
  %689 = fmul <2 x double> %558, splat (double 2.000000e+00)
  %690 = fcmp uge <2 x double> %680, %689
  %691 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %692 = fcmp une <2 x double> %691, zeroinitializer
  %693 = or <2 x i1> %692, %690
  %694 = fmul <2 x double> %680, splat (double 5.000000e-01)
  %695 = select <2 x i1> %693, <2 x double> %558, <2 x double> %694
  %696 = select <2 x i1> %682, <2 x double> %680, <2 x double> %695
  %697 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %698 = icmp eq <2 x i64> %538, zeroinitializer
  %699 = select <2 x i1> %698, <2 x double> %697, <2 x double> %696
  store <2 x double> %699, ptr %173, align 16, !tbaa !26
  %700 = fdiv <2 x double> %699, %582
  %701 = fdiv <2 x double> splat (double 1.000000e+00), %699
  %702 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %700, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %703 = fadd <2 x double> %700, splat (double 1.000000e+00)
  %704 = fdiv <2 x double> %702, %703
  %705 = fmul <2 x double> %701, %704
  %706 = icmp eq <2 x i64> %587, zeroinitializer
  %707 = select <2 x i1> %706, <2 x double> %705, <2 x double> %701
  %708 = fneg <2 x double> %701
  %709 = fneg <2 x double> %703
  %710 = fmul <2 x double> %701, %709
  %711 = select <2 x i1> %706, <2 x double> %710, <2 x double> %708
  %712 = fmul <2 x double> %700, %700
  %713 = fdiv <2 x double> %712, %703
  %714 = fmul <2 x double> %701, %713
  %715 = select <2 x i1> %706, <2 x double> %714, <2 x double> zeroinitializer
  %716 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %717 = select <2 x i1> %698, <2 x double> %716, <2 x double> %707
  store <2 x double> %717, ptr %175, align 16, !tbaa !26
  %718 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %719 = select <2 x i1> %698, <2 x double> %718, <2 x double> %711
  store <2 x double> %719, ptr %176, align 16, !tbaa !26
  %720 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %721 = select <2 x i1> %698, <2 x double> %720, <2 x double> %715
  store <2 x double> %721, ptr %177, align 16, !tbaa !26
  %722 = select <2 x i1> %706, <2 x double> %700, <2 x double> zeroinitializer
  %723 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %722, <2 x double> %581, <2 x double> %567)
  %724 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %725 = select <2 x i1> %698, <2 x double> %724, <2 x double> %723
  %726 = load <2 x double>, ptr %236, align 16, !tbaa !26
  %727 = load <2 x double>, ptr %237, align 16, !tbaa !26
  %728 = fsub <2 x double> %726, %727
  %729 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %722, <2 x double> %728, <2 x double> %726)
  %730 = load <2 x double>, ptr %235, align 16, !tbaa !26
  %731 = select <2 x i1> %698, <2 x double> %730, <2 x double> %729
  store <2 x double> %731, ptr %235, align 16, !tbaa !26
  %732 = load <2 x double>, ptr %239, align 16, !tbaa !26
  %733 = load <2 x double>, ptr %240, align 16, !tbaa !26
  %734 = fsub <2 x double> %732, %733
  %735 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %722, <2 x double> %734, <2 x double> %732)
  %736 = load <2 x double>, ptr %238, align 16, !tbaa !26
  %737 = select <2 x i1> %698, <2 x double> %736, <2 x double> %735
  store <2 x double> %737, ptr %238, align 16, !tbaa !26
  %738 = load <2 x double>, ptr %242, align 16, !tbaa !26
  %739 = load <2 x double>, ptr %243, align 16, !tbaa !26
  %740 = fsub <2 x double> %738, %739
  %741 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %722, <2 x double> %740, <2 x double> %738)
  %742 = load <2 x double>, ptr %241, align 16, !tbaa !26
  %743 = select <2 x i1> %698, <2 x double> %742, <2 x double> %741
  store <2 x double> %743, ptr %241, align 16, !tbaa !26
  %744 = load <2 x double>, ptr %245, align 16, !tbaa !26
  %745 = load <2 x double>, ptr %246, align 16, !tbaa !26
  %746 = fsub <2 x double> %744, %745
  %747 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %722, <2 x double> %746, <2 x double> %744)
  %748 = load <2 x double>, ptr %244, align 16, !tbaa !26
  %749 = select <2 x i1> %698, <2 x double> %748, <2 x double> %747
  store <2 x double> %749, ptr %244, align 16, !tbaa !26
  %750 = load <2 x double>, ptr %248, align 16, !tbaa !26
  %751 = load <2 x double>, ptr %249, align 16, !tbaa !26
  %752 = fsub <2 x double> %750, %751
  %753 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %722, <2 x double> %752, <2 x double> %750)
  %754 = load <2 x double>, ptr %247, align 16, !tbaa !26
  %755 = select <2 x i1> %698, <2 x double> %754, <2 x double> %753
  store <2 x double> %755, ptr %247, align 16, !tbaa !26
  %756 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %757 = icmp eq <2 x i64> %756, zeroinitializer
  %758 = select <2 x i1> %757, <2 x double> zeroinitializer, <2 x double> %569
  %759 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %760 = fsub <2 x double> %758, %759
  %761 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %762 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %575, <2 x double> %761, <2 x double> %574)
  %763 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %573, <2 x double> %762, <2 x double> %577)
  %764 = fdiv <2 x double> %760, %763
  %765 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %766 = load <2 x i64>, ptr %165, align 16, !tbaa !26
  %767 = or <2 x i64> %766, %765
  %768 = and <2 x i64> %767, %538
  %769 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %699, <2 x double> %764, <2 x double> %761)
  %770 = icmp eq <2 x i64> %768, zeroinitializer
  %771 = select <2 x i1> %599, <2 x i1> splat (i1 true), <2 x i1> %770
  %772 = select <2 x i1> %771, <2 x double> %725, <2 x double> %769
  store <2 x double> %772, ptr %178, align 16, !tbaa !26
  %773 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %774 = select <2 x i1> %698, <2 x double> %773, <2 x double> %760
  store <2 x double> %774, ptr %179, align 16, !tbaa !26
  %775 = xor <2 x i64> %766, splat (i64 -1)
  %776 = and <2 x i64> %765, %775
  store <2 x i64> %776, ptr %166, align 16, !tbaa !26
  %777 = load i64, ptr %169, align 8, !tbaa !20
  %778 = icmp sgt i64 %777, 0
  br i1 %778, label %779, label %1454

779:                                              ; preds = %672
  %780 = xor <2 x i64> %538, splat (i64 -1)
  br label %781

781:                                              ; preds = %779, %1411
  %782 = phi i64 [ 0, %779 ], [ %1427, %1411 ]
  %783 = load ptr, ptr %142, align 8, !tbaa !28
  %784 = getelementptr inbounds nuw %struct.Piece, ptr %783, i64 %782
  %785 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %786 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %787 = getelementptr inbounds nuw i8, ptr %784, i64 2096
  %788 = load <2 x i64>, ptr %787, align 16, !tbaa !26
  %789 = fdiv <2 x double> %785, %786
  %790 = fdiv <2 x double> splat (double 1.000000e+00), %785
  %791 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %789, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %792 = fadd <2 x double> %789, splat (double 1.000000e+00)
  %793 = fdiv <2 x double> %791, %792
  %794 = fmul <2 x double> %790, %793
  %795 = icmp eq <2 x i64> %788, zeroinitializer
  %796 = select <2 x i1> %795, <2 x double> %794, <2 x double> %790
  %797 = fneg <2 x double> %790
  %798 = fneg <2 x double> %792
  %799 = fmul <2 x double> %790, %798
  %800 = select <2 x i1> %795, <2 x double> %799, <2 x double> %797
  %801 = fmul <2 x double> %789, %789
  %802 = fdiv <2 x double> %801, %792
  %803 = fmul <2 x double> %790, %802
  %804 = select <2 x i1> %795, <2 x double> %803, <2 x double> zeroinitializer
  %805 = getelementptr inbounds nuw i8, ptr %784, i64 1408
  %806 = load <2 x double>, ptr %805, align 16, !tbaa !26
  %807 = select <2 x i1> %698, <2 x double> %806, <2 x double> %796
  store <2 x double> %807, ptr %805, align 16, !tbaa !26
  %808 = getelementptr inbounds nuw i8, ptr %784, i64 1424
  %809 = load <2 x double>, ptr %808, align 16, !tbaa !26
  %810 = select <2 x i1> %698, <2 x double> %809, <2 x double> %800
  store <2 x double> %810, ptr %808, align 16, !tbaa !26
  %811 = getelementptr inbounds nuw i8, ptr %784, i64 1440
  %812 = load <2 x double>, ptr %811, align 16, !tbaa !26
  %813 = select <2 x i1> %698, <2 x double> %812, <2 x double> %804
  store <2 x double> %813, ptr %811, align 16, !tbaa !26
  %814 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %815 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %816 = fdiv <2 x double> %814, %815
  %817 = select <2 x i1> %795, <2 x double> %816, <2 x double> zeroinitializer
  %818 = getelementptr inbounds nuw i8, ptr %784, i64 736
  %819 = getelementptr inbounds nuw i8, ptr %784, i64 960
  %820 = getelementptr inbounds nuw i8, ptr %784, i64 1184
  br label %1430

821:                                              ; preds = %1430
  %822 = getelementptr inbounds nuw i8, ptr %784, i64 1520
  %823 = getelementptr inbounds nuw i8, ptr %784, i64 880
  %824 = load <2 x double>, ptr %823, align 16, !tbaa !26
  %825 = fcmp ogt <2 x double> %824, zeroinitializer
  %826 = select <2 x i1> %825, <2 x double> %824, <2 x double> zeroinitializer
  %827 = load <2 x double>, ptr %822, align 16, !tbaa !26
  %828 = select <2 x i1> %698, <2 x double> %827, <2 x double> %826
  store <2 x double> %828, ptr %822, align 16, !tbaa !26
  %829 = getelementptr inbounds nuw i8, ptr %784, i64 96
  %830 = load <2 x double>, ptr %829, align 16, !tbaa !26
  %831 = getelementptr inbounds nuw i8, ptr %784, i64 112
  %832 = load <2 x double>, ptr %831, align 16, !tbaa !26
  %833 = getelementptr inbounds nuw i8, ptr %784, i64 128
  %834 = load <2 x double>, ptr %833, align 16, !tbaa !26
  %835 = getelementptr inbounds nuw i8, ptr %784, i64 160
  %836 = load <2 x double>, ptr %835, align 16, !tbaa !26
  %837 = getelementptr inbounds nuw i8, ptr %784, i64 192
  %838 = load <2 x double>, ptr %837, align 16, !tbaa !26
  %839 = getelementptr inbounds nuw i8, ptr %784, i64 208
  %840 = getelementptr inbounds nuw i8, ptr %784, i64 384
  %841 = load <2 x double>, ptr %840, align 16, !tbaa !26
  %842 = getelementptr inbounds nuw i8, ptr %784, i64 400
  %843 = getelementptr inbounds nuw i8, ptr %784, i64 1168
  %844 = load <2 x double>, ptr %843, align 16, !tbaa !26
  %845 = fsub <2 x double> %844, %841
  %846 = getelementptr inbounds nuw i8, ptr %784, i64 1392
  %847 = load <2 x double>, ptr %846, align 16, !tbaa !26
  %848 = fsub <2 x double> %847, %841
  %849 = load <2 x double>, ptr %808, align 16, !tbaa !26
  %850 = load <2 x double>, ptr %811, align 16, !tbaa !26
  %851 = fmul <2 x double> %845, %849
  %852 = fmul <2 x double> %848, %850
  %853 = fmul <2 x double> %841, %849
  %854 = fmul <2 x double> %836, %853
  %855 = fmul <2 x double> %841, %850
  %856 = fmul <2 x double> %836, %855
  %857 = getelementptr inbounds nuw i8, ptr %784, i64 2144
  %858 = load ptr, ptr %857, align 16, !tbaa !47
  %859 = getelementptr inbounds nuw i8, ptr %784, i64 2152
  %860 = load ptr, ptr %859, align 8, !tbaa !57
  %861 = getelementptr inbounds nuw i8, ptr %784, i64 2232
  %862 = load ptr, ptr %861, align 8, !tbaa !49
  %863 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %864 = and <2 x i64> %863, %780
  %865 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %864)
  %866 = icmp eq i64 %865, 0
  %867 = getelementptr inbounds nuw i8, ptr %784, i64 2136
  %868 = load ptr, ptr %867, align 8, !tbaa !58
  %869 = getelementptr inbounds nuw i8, ptr %784, i64 2160
  %870 = load ptr, ptr %869, align 16, !tbaa !59
  %871 = load i64, ptr %132, align 16, !tbaa !21
  %872 = icmp sgt i64 %871, 0
  br i1 %872, label %873, label %875

873:                                              ; preds = %821
  %874 = getelementptr inbounds nuw i8, ptr %784, i64 2128
  br label %888

875:                                              ; preds = %923, %821
  %876 = fmul <2 x double> %838, %849
  %877 = fmul <2 x double> %838, %850
  %878 = getelementptr inbounds nuw i8, ptr %784, i64 2312
  %879 = load ptr, ptr %878, align 8, !tbaa !50
  %880 = getelementptr inbounds nuw i8, ptr %784, i64 2320
  %881 = load ptr, ptr %880, align 16, !tbaa !60
  %882 = load i64, ptr %133, align 8, !tbaa !22
  %883 = icmp sgt i64 %882, 0
  br i1 %883, label %884, label %957

884:                                              ; preds = %875
  %885 = getelementptr inbounds nuw i8, ptr %784, i64 2264
  %886 = getelementptr inbounds nuw i8, ptr %784, i64 2272
  %887 = getelementptr inbounds nuw i8, ptr %784, i64 2280
  br label %930

888:                                              ; preds = %873, %923
  %889 = phi i64 [ 0, %873 ], [ %927, %923 ]
  %890 = getelementptr inbounds nuw <2 x double>, ptr %858, i64 %889
  %891 = load <2 x double>, ptr %890, align 16, !tbaa !26
  %892 = getelementptr inbounds nuw <2 x double>, ptr %860, i64 %889
  %893 = load <2 x double>, ptr %892, align 16, !tbaa !26
  %894 = fsub <2 x double> %891, %893
  %895 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %817, <2 x double> %894, <2 x double> %891)
  br i1 %866, label %900, label %896

896:                                              ; preds = %888
  %897 = getelementptr inbounds nuw <2 x double>, ptr %868, i64 %889
  %898 = load <2 x double>, ptr %897, align 16, !tbaa !26
  %899 = select <2 x i1> %698, <2 x double> %898, <2 x double> %895
  br label %900

900:                                              ; preds = %896, %888
  %901 = phi <2 x double> [ %899, %896 ], [ %895, %888 ]
  %902 = getelementptr inbounds nuw <2 x double>, ptr %868, i64 %889
  store <2 x double> %901, ptr %902, align 16, !tbaa !26
  %903 = load i64, ptr %874, align 16, !tbaa !31
  %904 = icmp slt i64 %889, %903
  %905 = getelementptr inbounds nuw <2 x double>, ptr %862, i64 %889
  %906 = load <2 x double>, ptr %905, align 16, !tbaa !26
  br i1 %904, label %907, label %910

907:                                              ; preds = %900
  %908 = fmul <2 x double> %856, %893
  %909 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %854, <2 x double> %891, <2 x double> %908)
  br label %923

910:                                              ; preds = %900
  %911 = fmul <2 x double> %834, %891
  %912 = fmul <2 x double> %911, splat (double 0x3FD5555555555555)
  %913 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %832, <2 x double> splat (double 5.000000e-01), <2 x double> %912)
  %914 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %891, <2 x double> %913, <2 x double> %830)
  %915 = fmul <2 x double> %891, %914
  %916 = fmul <2 x double> %834, %893
  %917 = fmul <2 x double> %916, splat (double 0x3FD5555555555555)
  %918 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %832, <2 x double> splat (double 5.000000e-01), <2 x double> %917)
  %919 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %893, <2 x double> %918, <2 x double> %830)
  %920 = fmul <2 x double> %893, %919
  %921 = fmul <2 x double> %852, %920
  %922 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %851, <2 x double> %915, <2 x double> %921)
  br label %923

923:                                              ; preds = %910, %907
  %924 = phi <2 x double> [ %922, %910 ], [ %909, %907 ]
  %925 = fmul <2 x double> %924, %906
  %926 = getelementptr inbounds nuw <2 x double>, ptr %870, i64 %889
  store <2 x double> %925, ptr %926, align 16, !tbaa !26
  %927 = add nuw nsw i64 %889, 1
  %928 = load i64, ptr %132, align 16, !tbaa !21
  %929 = icmp slt i64 %927, %928
  br i1 %929, label %888, label %875, !llvm.loop !61

930:                                              ; preds = %884, %930
  %931 = phi i64 [ 0, %884 ], [ %932, %930 ]
  %932 = add nuw nsw i64 %931, 1
  %933 = getelementptr inbounds nuw <2 x double>, ptr %879, i64 %932
  %934 = load <2 x double>, ptr %933, align 16, !tbaa !26
  %935 = getelementptr inbounds nuw <2 x double>, ptr %879, i64 %931
  %936 = load <2 x double>, ptr %935, align 16, !tbaa !26
  %937 = fsub <2 x double> %934, %936
  %938 = load ptr, ptr %885, align 8, !tbaa !51
  %939 = getelementptr inbounds nuw <2 x double>, ptr %938, i64 %931
  %940 = load <2 x double>, ptr %939, align 16, !tbaa !26
  %941 = fmul <2 x double> %937, %940
  %942 = getelementptr inbounds nuw <2 x double>, ptr %881, i64 %932
  %943 = load <2 x double>, ptr %942, align 16, !tbaa !26
  %944 = getelementptr inbounds nuw <2 x double>, ptr %881, i64 %931
  %945 = load <2 x double>, ptr %944, align 16, !tbaa !26
  %946 = fsub <2 x double> %943, %945
  %947 = load ptr, ptr %886, align 16, !tbaa !62
  %948 = getelementptr inbounds nuw <2 x double>, ptr %947, i64 %931
  %949 = load <2 x double>, ptr %948, align 16, !tbaa !26
  %950 = fmul <2 x double> %946, %949
  %951 = fmul <2 x double> %877, %950
  %952 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %876, <2 x double> %941, <2 x double> %951)
  %953 = load ptr, ptr %887, align 8, !tbaa !63
  %954 = getelementptr inbounds nuw <2 x double>, ptr %953, i64 %931
  store <2 x double> %952, ptr %954, align 16, !tbaa !26
  %955 = load i64, ptr %133, align 8, !tbaa !22
  %956 = icmp slt i64 %932, %955
  br i1 %956, label %930, label %957, !llvm.loop !64

957:                                              ; preds = %930, %875
  %958 = getelementptr inbounds nuw i8, ptr %784, i64 416
  %959 = load <2 x double>, ptr %958, align 16, !tbaa !26
  %960 = fcmp ogt <2 x double> %959, zeroinitializer
  %961 = bitcast <2 x i1> %960 to i2
  %962 = icmp eq i2 %961, 0
  br i1 %962, label %963, label %968

963:                                              ; preds = %957
  %964 = getelementptr inbounds nuw i8, ptr %784, i64 1888
  %965 = load <2 x double>, ptr %964, align 16, !tbaa !26
  %966 = select <2 x i1> %698, <2 x double> %965, <2 x double> zeroinitializer
  store <2 x double> %966, ptr %964, align 16, !tbaa !26
  %967 = load <2 x double>, ptr %839, align 16, !tbaa !26, !noalias !65
  br label %1077

968:                                              ; preds = %957
  %969 = load <2 x double>, ptr %840, align 16, !tbaa !26
  %970 = getelementptr inbounds nuw i8, ptr %784, i64 432
  %971 = load <2 x double>, ptr %970, align 16, !tbaa !26
  %972 = getelementptr inbounds nuw i8, ptr %784, i64 464
  %973 = load <2 x double>, ptr %972, align 16, !tbaa !26
  %974 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %975 = fneg <2 x double> %974
  %976 = fdiv <2 x double> %975, %971
  %977 = fcmp ogt <2 x double> %976, splat (double -7.000000e+02)
  %978 = select <2 x i1> %977, <2 x double> %976, <2 x double> splat (double -7.000000e+02)
  %979 = fcmp olt <2 x double> %978, splat (double 7.000000e+02)
  %980 = select <2 x i1> %979, <2 x double> %978, <2 x double> splat (double 7.000000e+02)
  %981 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %980, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %982 = fadd <2 x double> %981, splat (double 0xC338000000000000)
  %983 = fneg <2 x double> %982
  %984 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %983, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %980)
  %985 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %983, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %984)
  %986 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %985, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %987 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %986, <2 x double> %985, <2 x double> splat (double 0x3E5AE64567F544E4))
  %988 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %987, <2 x double> %985, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %989 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %988, <2 x double> %985, <2 x double> splat (double 0x3EC71DE3A556C734))
  %990 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %989, <2 x double> %985, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %990, <2 x double> %985, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %992 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %991, <2 x double> %985, <2 x double> splat (double 0x3F56C16C16C16C17))
  %993 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %992, <2 x double> %985, <2 x double> splat (double 0x3F81111111111111))
  %994 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %993, <2 x double> %985, <2 x double> splat (double 0x3FA5555555555555))
  %995 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %994, <2 x double> %985, <2 x double> splat (double 0x3FC5555555555555))
  %996 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %995, <2 x double> %985, <2 x double> splat (double 5.000000e-01))
  %997 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %996, <2 x double> %985, <2 x double> splat (double 1.000000e+00))
  %998 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %997, <2 x double> %985, <2 x double> splat (double 1.000000e+00))
  %999 = bitcast <2 x double> %981 to <2 x i64>
  %1000 = shl <2 x i64> %999, splat (i64 52)
  %1001 = bitcast <2 x double> %998 to <2 x i64>
  %1002 = add <2 x i64> %1000, %1001
  %1003 = bitcast <2 x i64> %1002 to <2 x double>
  %1004 = fsub <2 x double> splat (double 1.000000e+00), %1003
  %1005 = load <2 x double>, ptr %843, align 16, !tbaa !26
  %1006 = fsub <2 x double> %1005, %969
  %1007 = load ptr, ptr %867, align 8, !tbaa !58
  %1008 = load ptr, ptr %857, align 16, !tbaa !47
  %1009 = getelementptr inbounds nuw i8, ptr %784, i64 2176
  %1010 = load ptr, ptr %1009, align 16, !tbaa !48
  %1011 = load ptr, ptr %861, align 8, !tbaa !49
  %1012 = getelementptr inbounds nuw i8, ptr %784, i64 2168
  %1013 = load ptr, ptr %1012, align 8, !tbaa !68
  %1014 = getelementptr inbounds nuw i8, ptr %784, i64 2128
  %1015 = load i64, ptr %1014, align 16, !tbaa !31
  %1016 = load i64, ptr %132, align 16, !tbaa !21
  %1017 = icmp slt i64 %1015, %1016
  br i1 %1017, label %1018, label %1022

1018:                                             ; preds = %968
  %1019 = getelementptr inbounds nuw i8, ptr %784, i64 448
  %1020 = load <2 x double>, ptr %1019, align 16, !tbaa !26
  %1021 = fneg <2 x double> %1020
  br label %1034

1022:                                             ; preds = %1034, %968
  %1023 = phi <2 x double> [ zeroinitializer, %968 ], [ %1065, %1034 ]
  %1024 = phi <2 x double> [ zeroinitializer, %968 ], [ %1073, %1034 ]
  %1025 = getelementptr inbounds nuw i8, ptr %784, i64 976
  %1026 = load <2 x double>, ptr %1025, align 16, !tbaa !26
  %1027 = fsub <2 x double> %1026, %1005
  %1028 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1023, <2 x double> %1027, <2 x double> %1024)
  %1029 = getelementptr inbounds nuw i8, ptr %784, i64 1888
  %1030 = load <2 x double>, ptr %839, align 16, !tbaa !26
  %1031 = fmul <2 x double> %1030, %1028
  %1032 = load <2 x double>, ptr %1029, align 16, !tbaa !26
  %1033 = select <2 x i1> %698, <2 x double> %1032, <2 x double> %1031
  store <2 x double> %1033, ptr %1029, align 16, !tbaa !26
  br label %1077

1034:                                             ; preds = %1018, %1034
  %1035 = phi <2 x double> [ zeroinitializer, %1018 ], [ %1073, %1034 ]
  %1036 = phi i64 [ %1015, %1018 ], [ %1074, %1034 ]
  %1037 = getelementptr inbounds <2 x double>, ptr %1008, i64 %1036
  %1038 = load <2 x double>, ptr %1037, align 16, !tbaa !26
  %1039 = getelementptr inbounds <2 x double>, ptr %1007, i64 %1036
  %1040 = load <2 x double>, ptr %1039, align 16, !tbaa !26
  %1041 = fadd <2 x double> %1038, %1040
  %1042 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1041, <2 x double> splat (double 5.000000e-01), <2 x double> %1021)
  %1043 = fmul <2 x double> %973, %1042
  %1044 = fcmp ogt <2 x double> %1043, splat (double -5.000000e+00)
  %1045 = select <2 x i1> %1044, <2 x double> %1043, <2 x double> splat (double -5.000000e+00)
  %1046 = fcmp olt <2 x double> %1045, splat (double 5.000000e+00)
  %1047 = select <2 x i1> %1046, <2 x double> %1045, <2 x double> splat (double 5.000000e+00)
  %1048 = fmul <2 x double> %1047, %1047
  %1049 = fadd <2 x double> %1048, splat (double 3.780000e+02)
  %1050 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1048, <2 x double> %1049, <2 x double> splat (double 1.732500e+04))
  %1051 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1048, <2 x double> %1050, <2 x double> splat (double 1.351350e+05))
  %1052 = fmul <2 x double> %1047, %1051
  %1053 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1048, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1054 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1048, <2 x double> %1053, <2 x double> splat (double 6.237000e+04))
  %1055 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1048, <2 x double> %1054, <2 x double> splat (double 1.351350e+05))
  %1056 = fdiv <2 x double> %1052, %1055
  %1057 = fadd <2 x double> %1056, splat (double 1.000000e+00)
  %1058 = fmul <2 x double> %959, %1057
  %1059 = getelementptr inbounds <2 x double>, ptr %1010, i64 %1036
  %1060 = load <2 x double>, ptr %1059, align 16, !tbaa !26
  %1061 = fadd <2 x double> %1060, splat (double -1.000000e+00)
  %1062 = fadd <2 x double> %1061, %1058
  %1063 = fcmp ogt <2 x double> %1062, zeroinitializer
  %1064 = select <2 x i1> %1063, <2 x double> %1062, <2 x double> zeroinitializer
  %1065 = fmul <2 x double> %1004, %1064
  %1066 = fsub <2 x double> %1060, %1065
  %1067 = getelementptr inbounds <2 x double>, ptr %1013, i64 %1036
  %1068 = load <2 x double>, ptr %1067, align 16, !tbaa !26
  %1069 = select <2 x i1> %698, <2 x double> %1068, <2 x double> %1066
  store <2 x double> %1069, ptr %1067, align 16, !tbaa !26
  %1070 = getelementptr inbounds <2 x double>, ptr %1011, i64 %1036
  %1071 = load <2 x double>, ptr %1070, align 16, !tbaa !26
  %1072 = fmul <2 x double> %1006, %1071
  %1073 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1065, <2 x double> %1072, <2 x double> %1035)
  %1074 = add nsw i64 %1036, 1
  %1075 = load i64, ptr %132, align 16, !tbaa !21
  %1076 = icmp slt i64 %1074, %1075
  br i1 %1076, label %1034, label %1022, !llvm.loop !69

1077:                                             ; preds = %963, %1022
  %1078 = phi <2 x double> [ %966, %963 ], [ %1033, %1022 ]
  %1079 = phi <2 x double> [ %967, %963 ], [ %1030, %1022 ]
  %1080 = load <2 x double>, ptr %818, align 16, !tbaa !26
  %1081 = load <2 x double>, ptr %819, align 16, !tbaa !26
  %1082 = fcmp olt <2 x double> %1080, %1081
  %1083 = select <2 x i1> %1082, <2 x double> %1080, <2 x double> %1081
  %1084 = load <2 x double>, ptr %784, align 16, !tbaa !26
  %1085 = fmul <2 x double> %1084, splat (double 3.000000e-01)
  %1086 = fcmp ogt <2 x double> %1083, %1085
  %1087 = select <2 x i1> %1086, <2 x double> %1083, <2 x double> %1085
  %1088 = select <2 x i1> %698, <2 x double> %1080, <2 x double> %1087
  store <2 x double> %1088, ptr %818, align 16, !tbaa !26
  %1089 = getelementptr inbounds nuw i8, ptr %784, i64 768
  %1090 = load <2 x double>, ptr %1089, align 16, !tbaa !26, !noalias !65
  %1091 = getelementptr inbounds nuw i8, ptr %784, i64 1936
  %1092 = load <2 x double>, ptr %1091, align 16, !tbaa !26, !noalias !65
  %1093 = fmul <2 x double> %1090, %1092
  %1094 = fcmp ogt <2 x double> %1093, zeroinitializer
  %1095 = select <2 x i1> %1094, <2 x double> %1093, <2 x double> zeroinitializer
  %1096 = fcmp uge <2 x double> %1095, splat (double 1.000000e+00)
  %1097 = select <2 x i1> %1096, <2 x double> splat (double 1.000000e+00), <2 x double> %1095
  %1098 = getelementptr inbounds nuw i8, ptr %784, i64 2112
  %1099 = load <2 x i64>, ptr %1098, align 16, !tbaa !26, !noalias !65
  %1100 = load <2 x double>, ptr %180, align 16, !tbaa !26, !noalias !65
  %1101 = getelementptr inbounds nuw i8, ptr %784, i64 800
  %1102 = load <2 x double>, ptr %1101, align 16, !tbaa !26, !noalias !65
  %1103 = icmp eq <2 x i64> %1099, zeroinitializer
  %1104 = select <2 x i1> %1103, <2 x double> %1102, <2 x double> %1100
  %1105 = getelementptr inbounds nuw i8, ptr %784, i64 896
  %1106 = load <2 x double>, ptr %1105, align 16, !tbaa !26, !noalias !65
  %1107 = fsub <2 x double> splat (double 1.000000e+00), %1097
  %1108 = getelementptr inbounds nuw i8, ptr %784, i64 496
  %1109 = load <2 x double>, ptr %1108, align 16, !tbaa !26, !noalias !65
  %1110 = getelementptr inbounds nuw i8, ptr %784, i64 2080
  %1111 = load <2 x i64>, ptr %1110, align 16, !tbaa !26, !noalias !65
  %1112 = fsub <2 x double> %1084, %1088
  %1113 = getelementptr inbounds nuw i8, ptr %784, i64 1952
  %1114 = load <2 x double>, ptr %1113, align 16, !tbaa !26, !noalias !65
  %1115 = fmul <2 x double> %1112, %1114
  %1116 = icmp eq <2 x i64> %1111, zeroinitializer
  %1117 = select <2 x i1> %1116, <2 x double> zeroinitializer, <2 x double> %1115
  %1118 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1107, <2 x double> %1109, <2 x double> %1117)
  %1119 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1106, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1120 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1106, <2 x double> %1119, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1121 = fdiv <2 x double> splat (double 1.000000e+00), %1120
  %1122 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1104, <2 x double> %1118, <2 x double> splat (double 1.000000e+00))
  %1123 = fdiv <2 x double> splat (double 1.000000e+00), %1122
  %1124 = load <2 x double>, ptr %181, align 16, !tbaa !26, !noalias !65
  %1125 = load <2 x double>, ptr %178, align 16, !tbaa !26, !noalias !65
  %1126 = select <2 x i1> %1103, <2 x double> %1125, <2 x double> %1124
  %1127 = fsub <2 x double> %1126, %1106
  %1128 = fmul <2 x double> %1127, %1123
  %1129 = fmul <2 x double> %1104, %1128
  %1130 = load <2 x double>, ptr %805, align 16, !tbaa !26, !noalias !65
  %1131 = getelementptr inbounds nuw i8, ptr %784, i64 816
  %1132 = load <2 x double>, ptr %1131, align 16, !tbaa !26, !noalias !65
  %1133 = load <2 x double>, ptr %808, align 16, !tbaa !26, !noalias !65
  %1134 = getelementptr inbounds nuw i8, ptr %784, i64 1040
  %1135 = load <2 x double>, ptr %1134, align 16, !tbaa !26, !noalias !65
  %1136 = fmul <2 x double> %1133, %1135
  %1137 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1130, <2 x double> %1132, <2 x double> %1136)
  %1138 = load <2 x double>, ptr %811, align 16, !tbaa !26, !noalias !65
  %1139 = getelementptr inbounds nuw i8, ptr %784, i64 1264
  %1140 = load <2 x double>, ptr %1139, align 16, !tbaa !26, !noalias !65
  %1141 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1138, <2 x double> %1140, <2 x double> %1137)
  %1142 = fdiv <2 x double> %1114, %1079
  %1143 = fcmp ule <2 x double> %1097, zeroinitializer
  %1144 = or <2 x i1> %1096, %1143
  %1145 = fmul <2 x double> %1092, %1109
  %1146 = select <2 x i1> %1144, <2 x double> zeroinitializer, <2 x double> %1145
  %1147 = select <2 x i1> %1116, <2 x double> %1146, <2 x double> %1142
  %1148 = fmul <2 x double> %1104, %1129
  %1149 = fmul <2 x double> %1123, %1148
  %1150 = fmul <2 x double> %1121, %1149
  %1151 = fmul <2 x double> %1150, %1147
  %1152 = fdiv <2 x double> %1151, %1130
  %1153 = fadd <2 x double> %1152, splat (double 1.000000e+00)
  %1154 = fdiv <2 x double> splat (double 1.000000e+00), %1153
  %1155 = getelementptr inbounds nuw i8, ptr %784, i64 864
  %1156 = load <2 x double>, ptr %1155, align 16, !tbaa !26, !noalias !65
  %1157 = fsub <2 x double> %1129, %1156
  %1158 = load <2 x double>, ptr %822, align 16, !tbaa !26, !noalias !65
  %1159 = fsub <2 x double> %1141, %1158
  %1160 = fmul <2 x double> %1159, %1152
  %1161 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1157, <2 x double> %1121, <2 x double> %1160)
  %1162 = fmul <2 x double> %1161, %1154
  %1163 = getelementptr inbounds nuw i8, ptr %784, i64 1504
  %1164 = load <2 x double>, ptr %1163, align 16, !tbaa !26, !noalias !65
  %1165 = fcmp ule <2 x double> %1164, zeroinitializer
  %1166 = fcmp ule <2 x double> %1162, zeroinitializer
  %1167 = or <2 x i1> %1165, %1166
  %1168 = select <2 x i1> %1167, <2 x double> zeroinitializer, <2 x double> %1162
  %1169 = getelementptr inbounds nuw i8, ptr %784, i64 544
  %1170 = load <2 x double>, ptr %1169, align 16, !tbaa !26, !noalias !65
  %1171 = fcmp ogt <2 x double> %1170, zeroinitializer
  %1172 = getelementptr inbounds nuw i8, ptr %784, i64 256
  %1173 = load <2 x double>, ptr %1172, align 16, !tbaa !26, !noalias !65
  %1174 = bitcast <2 x i1> %1171 to i2
  %1175 = icmp eq i2 %1174, 0
  br i1 %1175, label %1188, label %1176

1176:                                             ; preds = %1077
  %1177 = getelementptr inbounds nuw i8, ptr %784, i64 912
  %1178 = load <2 x double>, ptr %1177, align 16, !tbaa !26, !noalias !65
  %1179 = fadd <2 x double> %1128, %1178
  %1180 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1179)
  %1181 = fcmp ogt <2 x double> %1170, splat (double 1.000000e-09)
  %1182 = select <2 x i1> %1181, <2 x double> %1170, <2 x double> splat (double 1.000000e-09)
  %1183 = fdiv <2 x double> %1180, %1182
  %1184 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1183)
  %1185 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1184)
  %1186 = select <2 x i1> %1171, <2 x double> %1185, <2 x double> splat (double 1.000000e+00)
  %1187 = fmul <2 x double> %1173, %1186
  br label %1188

1188:                                             ; preds = %1077, %1176
  %1189 = phi <2 x double> [ %1187, %1176 ], [ %1173, %1077 ]
  %1190 = getelementptr inbounds nuw i8, ptr %784, i64 1024
  %1191 = load <2 x double>, ptr %1190, align 16, !tbaa !26, !noalias !65
  %1192 = getelementptr inbounds nuw i8, ptr %784, i64 1248
  %1193 = load <2 x double>, ptr %1192, align 16, !tbaa !26, !noalias !65
  %1194 = fmul <2 x double> %1138, %1193
  %1195 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1133, <2 x double> %1191, <2 x double> %1194)
  %1196 = getelementptr inbounds nuw i8, ptr %784, i64 304
  %1197 = load <2 x double>, ptr %1196, align 16, !tbaa !26, !noalias !65
  %1198 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1197, <2 x double> %1130, <2 x double> splat (double 1.000000e+00))
  %1199 = fdiv <2 x double> splat (double 1.000000e+00), %1198
  %1200 = fmul <2 x double> %1123, %1128
  %1201 = fmul <2 x double> %1121, %1200
  %1202 = fmul <2 x double> %1201, %1154
  %1203 = select <2 x i1> %1167, <2 x double> zeroinitializer, <2 x double> %1202
  %1204 = getelementptr inbounds nuw i8, ptr %784, i64 272
  %1205 = load <2 x double>, ptr %1204, align 16, !tbaa !26, !noalias !65
  %1206 = fmul <2 x double> %1189, splat (double 2.500000e-01)
  %1207 = fmul <2 x double> %1118, %1206
  %1208 = fneg <2 x double> %1123
  %1209 = fmul <2 x double> %1207, %1208
  %1210 = select <2 x i1> %1171, <2 x double> %1209, <2 x double> splat (double -0.000000e+00)
  %1211 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1205, <2 x double> %1203, <2 x double> %1210)
  %1212 = fadd <2 x double> %1158, %1168
  %1213 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1205, <2 x double> %1212, <2 x double> %1189)
  %1214 = fneg <2 x double> %1197
  %1215 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1214, <2 x double> %1195, <2 x double> %1213)
  %1216 = fneg <2 x double> %1104
  %1217 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1199, <2 x double> %1215, <2 x double> %1216)
  %1218 = fmul <2 x double> %1199, %1211
  %1219 = fcmp olt <2 x double> %1218, splat (double 8.000000e-01)
  %1220 = select <2 x i1> %1219, <2 x double> %1218, <2 x double> splat (double 8.000000e-01)
  %1221 = fsub <2 x double> splat (double 1.000000e+00), %1220
  %1222 = fdiv <2 x double> %1217, %1221
  %1223 = fadd <2 x double> %1104, %1222
  %1224 = getelementptr inbounds nuw i8, ptr %784, i64 288
  %1225 = load <2 x double>, ptr %1224, align 16, !tbaa !26, !noalias !65
  %1226 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1214, <2 x double> %1195, <2 x double> %1225)
  %1227 = fmul <2 x double> %1199, %1226
  %1228 = fcmp olt <2 x double> %1223, %1227
  %1229 = select <2 x i1> %1228, <2 x double> %1223, <2 x double> %1227
  %1230 = select <2 x i1> %1103, <2 x double> %1229, <2 x double> %1100
  %1231 = fsub <2 x double> %1230, %1104
  %1232 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1203, <2 x double> %1231, <2 x double> %1168)
  %1233 = fcmp ogt <2 x double> %1232, zeroinitializer
  %1234 = select <2 x i1> %1233, <2 x double> %1232, <2 x double> zeroinitializer
  %1235 = select <2 x i1> %698, <2 x double> %1102, <2 x double> %1230
  store <2 x double> %1235, ptr %1101, align 16, !tbaa !26
  %1236 = select <2 x i1> %698, <2 x double> %1164, <2 x double> %1234
  store <2 x double> %1236, ptr %1163, align 16, !tbaa !26
  %1237 = fadd <2 x double> %1158, %1236
  %1238 = fneg <2 x double> %1133
  %1239 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1238, <2 x double> %1135, <2 x double> %1237)
  %1240 = fneg <2 x double> %1138
  %1241 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1240, <2 x double> %1140, <2 x double> %1239)
  %1242 = fdiv <2 x double> %1241, %1130
  %1243 = load <2 x double>, ptr %842, align 16, !tbaa !26, !noalias !70
  %1244 = fsub <2 x double> %1243, %1242
  %1245 = getelementptr inbounds nuw i8, ptr %784, i64 1008
  %1246 = load <2 x double>, ptr %1245, align 16, !tbaa !26, !noalias !70
  %1247 = fsub <2 x double> %1246, %1078
  %1248 = getelementptr inbounds nuw i8, ptr %784, i64 976
  %1249 = load <2 x double>, ptr %1248, align 16, !tbaa !26, !noalias !70
  %1250 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1111)
  %1251 = icmp eq i64 %1250, 0
  br i1 %1251, label %1411, label %1252

1252:                                             ; preds = %1188
  %1253 = fcmp ogt <2 x double> %1247, %1244
  %1254 = getelementptr inbounds nuw i8, ptr %784, i64 1920
  %1255 = load <2 x double>, ptr %1254, align 16, !tbaa !26, !noalias !70
  %1256 = fcmp oeq <2 x double> %1255, zeroinitializer
  %1257 = select <2 x i1> %1256, <2 x i1> %1253, <2 x i1> zeroinitializer
  %1258 = select <2 x i1> %1257, <2 x i64> %1111, <2 x i64> zeroinitializer
  %1259 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1258)
  %1260 = icmp eq i64 %1259, 0
  br i1 %1260, label %1329, label %1261

1261:                                             ; preds = %1252
  %1262 = fsub <2 x double> %1247, %1244
  %1263 = fdiv <2 x double> %1262, %1079
  %1264 = getelementptr inbounds nuw i8, ptr %784, i64 2168
  %1265 = load ptr, ptr %1264, align 8, !tbaa !68, !noalias !70
  %1266 = load i64, ptr %132, align 16, !tbaa !21, !noalias !70
  %1267 = add nsw i64 %1266, -1
  %1268 = getelementptr inbounds <2 x double>, ptr %1265, i64 %1267
  %1269 = load <2 x double>, ptr %1268, align 16, !tbaa !26, !noalias !70
  %1270 = icmp sgt i64 %1266, 1
  br i1 %1270, label %1271, label %1321

1271:                                             ; preds = %1261
  %1272 = getelementptr inbounds nuw i8, ptr %784, i64 2128
  %1273 = load i64, ptr %1272, align 16, !tbaa !31, !noalias !70
  %1274 = getelementptr inbounds nuw i8, ptr %784, i64 2224
  br label %1275

1275:                                             ; preds = %1271, %1318
  %1276 = phi <2 x double> [ %1249, %1271 ], [ %1313, %1318 ]
  %1277 = phi i64 [ %1267, %1271 ], [ %1319, %1318 ]
  %1278 = phi <2 x double> [ %1269, %1271 ], [ %1301, %1318 ]
  %1279 = phi <2 x i64> [ %1258, %1271 ], [ %1305, %1318 ]
  %1280 = phi <2 x double> [ %1263, %1271 ], [ %1312, %1318 ]
  %1281 = icmp slt i64 %1277, %1273
  br i1 %1281, label %1282, label %1288

1282:                                             ; preds = %1275
  %1283 = load ptr, ptr %1274, align 16, !tbaa !73, !noalias !70
  %1284 = getelementptr inbounds nuw <2 x double>, ptr %1283, i64 %1277
  %1285 = load <2 x double>, ptr %1284, align 16, !tbaa !26, !noalias !70
  %1286 = load <2 x double>, ptr %840, align 16, !tbaa !26, !noalias !70
  %1287 = fmul <2 x double> %1285, %1286
  br label %1296

1288:                                             ; preds = %1275
  %1289 = load <2 x double>, ptr %843, align 16, !tbaa !26, !noalias !70
  %1290 = load <2 x double>, ptr %840, align 16, !tbaa !26, !noalias !70
  %1291 = load ptr, ptr %1274, align 16, !tbaa !73, !noalias !70
  %1292 = getelementptr inbounds nuw <2 x double>, ptr %1291, i64 %1277
  %1293 = load <2 x double>, ptr %1292, align 16, !tbaa !26, !noalias !70
  %1294 = fsub <2 x double> %1289, %1290
  %1295 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1293, <2 x double> %1294, <2 x double> %1290)
  br label %1296

1296:                                             ; preds = %1282, %1288
  %1297 = phi <2 x double> [ %1287, %1282 ], [ %1295, %1288 ]
  %1298 = getelementptr inbounds nuw <2 x double>, ptr %1265, i64 %1277
  %1299 = load <2 x double>, ptr %1298, align 16, !tbaa !26, !noalias !70
  %1300 = icmp eq <2 x i64> %1279, zeroinitializer
  %1301 = select <2 x i1> %1300, <2 x double> %1278, <2 x double> %1299
  %1302 = fsub <2 x double> %1276, %1297
  %1303 = fmul <2 x double> %1302, %1301
  %1304 = fcmp olt <2 x double> %1303, %1280
  %1305 = select <2 x i1> %1304, <2 x i64> %1279, <2 x i64> zeroinitializer
  %1306 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1305)
  %1307 = icmp eq i64 %1306, 0
  br i1 %1307, label %1321, label %1308

1308:                                             ; preds = %1296
  %1309 = fneg <2 x double> %1301
  %1310 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1309, <2 x double> %1302, <2 x double> %1280)
  %1311 = icmp eq <2 x i64> %1305, zeroinitializer
  %1312 = select <2 x i1> %1311, <2 x double> %1280, <2 x double> %1310
  %1313 = select <2 x i1> %1311, <2 x double> %1276, <2 x double> %1297
  %1314 = icmp eq i64 %1277, 1
  br i1 %1314, label %1315, label %1318

1315:                                             ; preds = %1308
  %1316 = load <2 x double>, ptr %1265, align 16, !tbaa !26, !noalias !70
  %1317 = select <2 x i1> %1311, <2 x double> %1301, <2 x double> %1316
  br label %1321

1318:                                             ; preds = %1308
  %1319 = add nsw i64 %1277, -1
  %1320 = icmp sgt i64 %1277, 1
  br i1 %1320, label %1275, label %1321, !llvm.loop !74

1321:                                             ; preds = %1318, %1296, %1315, %1261
  %1322 = phi <2 x double> [ %1263, %1261 ], [ %1312, %1315 ], [ %1280, %1296 ], [ %1312, %1318 ]
  %1323 = phi <2 x double> [ %1249, %1261 ], [ %1313, %1315 ], [ %1276, %1296 ], [ %1313, %1318 ]
  %1324 = phi <2 x double> [ %1269, %1261 ], [ %1317, %1315 ], [ %1301, %1296 ], [ %1301, %1318 ]
  %1325 = fdiv <2 x double> %1322, %1324
  %1326 = fsub <2 x double> %1323, %1325
  %1327 = icmp eq <2 x i64> %1258, zeroinitializer
  %1328 = select <2 x i1> %1327, <2 x double> %1249, <2 x double> %1326
  br label %1329

1329:                                             ; preds = %1321, %1252
  %1330 = phi <2 x double> [ %1328, %1321 ], [ %1249, %1252 ]
  %1331 = getelementptr inbounds nuw i8, ptr %784, i64 640
  %1332 = load <2 x double>, ptr %1331, align 16, !tbaa !26, !noalias !70
  %1333 = getelementptr inbounds nuw i8, ptr %784, i64 656
  %1334 = load <2 x double>, ptr %1333, align 16, !tbaa !26, !noalias !70
  %1335 = getelementptr inbounds nuw i8, ptr %784, i64 672
  %1336 = load <2 x double>, ptr %1335, align 16, !tbaa !26, !noalias !70
  %1337 = getelementptr inbounds nuw i8, ptr %784, i64 688
  %1338 = load <2 x double>, ptr %1337, align 16, !tbaa !26, !noalias !70
  %1339 = fmul <2 x double> %1084, splat (double 2.000000e-05)
  %1340 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1088, <2 x double> %1338, <2 x double> %1336)
  %1341 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1088, <2 x double> %1340, <2 x double> %1334)
  %1342 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1088, <2 x double> %1341, <2 x double> %1332)
  %1343 = fsub <2 x double> %1342, %1330
  %1344 = fmul <2 x double> %1088, splat (double 3.000000e+00)
  %1345 = fmul <2 x double> %1344, %1338
  %1346 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1336, <2 x double> splat (double 2.000000e+00), <2 x double> %1345)
  %1347 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1088, <2 x double> %1346, <2 x double> %1334)
  %1348 = fdiv <2 x double> %1343, %1347
  %1349 = fsub <2 x double> %1088, %1348
  %1350 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1348)
  %1351 = fcmp oge <2 x double> %1350, %1339
  %1352 = bitcast <2 x i1> %1351 to i2
  %1353 = icmp eq i2 %1352, 0
  br i1 %1353, label %1400, label %1354, !llvm.loop !75

1354:                                             ; preds = %1329
  %1355 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1349, <2 x double> %1338, <2 x double> %1336)
  %1356 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1349, <2 x double> %1355, <2 x double> %1334)
  %1357 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1349, <2 x double> %1356, <2 x double> %1332)
  %1358 = fsub <2 x double> %1357, %1330
  %1359 = fmul <2 x double> %1349, splat (double 3.000000e+00)
  %1360 = fmul <2 x double> %1359, %1338
  %1361 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1336, <2 x double> splat (double 2.000000e+00), <2 x double> %1360)
  %1362 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1349, <2 x double> %1361, <2 x double> %1334)
  %1363 = fdiv <2 x double> %1358, %1362
  %1364 = fsub <2 x double> %1349, %1363
  %1365 = select <2 x i1> %1351, <2 x double> %1364, <2 x double> %1349
  %1366 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1363)
  %1367 = fcmp oge <2 x double> %1366, %1339
  %1368 = and <2 x i1> %1367, %1351
  %1369 = bitcast <2 x i1> %1368 to i2
  %1370 = icmp eq i2 %1369, 0
  br i1 %1370, label %1400, label %1371, !llvm.loop !75

1371:                                             ; preds = %1354
  %1372 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1365, <2 x double> %1338, <2 x double> %1336)
  %1373 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1365, <2 x double> %1372, <2 x double> %1334)
  %1374 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1365, <2 x double> %1373, <2 x double> %1332)
  %1375 = fsub <2 x double> %1374, %1330
  %1376 = fmul <2 x double> %1365, splat (double 3.000000e+00)
  %1377 = fmul <2 x double> %1376, %1338
  %1378 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1336, <2 x double> splat (double 2.000000e+00), <2 x double> %1377)
  %1379 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1365, <2 x double> %1378, <2 x double> %1334)
  %1380 = fdiv <2 x double> %1375, %1379
  %1381 = fsub <2 x double> %1365, %1380
  %1382 = select <2 x i1> %1368, <2 x double> %1381, <2 x double> %1365
  %1383 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1380)
  %1384 = fcmp oge <2 x double> %1383, %1339
  %1385 = and <2 x i1> %1384, %1368
  %1386 = bitcast <2 x i1> %1385 to i2
  %1387 = icmp eq i2 %1386, 0
  br i1 %1387, label %1400, label %1388, !llvm.loop !75

1388:                                             ; preds = %1371
  %1389 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1382, <2 x double> %1338, <2 x double> %1336)
  %1390 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1382, <2 x double> %1389, <2 x double> %1334)
  %1391 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1382, <2 x double> %1390, <2 x double> %1332)
  %1392 = fsub <2 x double> %1391, %1330
  %1393 = fmul <2 x double> %1382, splat (double 3.000000e+00)
  %1394 = fmul <2 x double> %1393, %1338
  %1395 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1336, <2 x double> splat (double 2.000000e+00), <2 x double> %1394)
  %1396 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1382, <2 x double> %1395, <2 x double> %1334)
  %1397 = fdiv <2 x double> %1392, %1396
  %1398 = fsub <2 x double> %1382, %1397
  %1399 = select <2 x i1> %1385, <2 x double> %1398, <2 x double> %1382
  br label %1400

1400:                                             ; preds = %1388, %1371, %1354, %1329
  %1401 = phi <2 x double> [ %1349, %1329 ], [ %1365, %1354 ], [ %1382, %1371 ], [ %1399, %1388 ]
  %1402 = fmul <2 x double> %1084, splat (double 2.800000e-01)
  %1403 = fcmp ogt <2 x double> %1401, %1402
  %1404 = select <2 x i1> %1403, <2 x double> %1401, <2 x double> %1402
  %1405 = fcmp olt <2 x double> %1404, %1084
  %1406 = select <2 x i1> %1405, <2 x double> %1404, <2 x double> %1084
  %1407 = select <2 x i1> %1116, <2 x double> %1088, <2 x double> %1406
  %1408 = fcmp olt <2 x double> %1247, %1244
  %1409 = select <2 x i1> %1116, <2 x i1> splat (i1 true), <2 x i1> %1408
  %1410 = select <2 x i1> %1409, <2 x double> %1247, <2 x double> %1244
  br label %1411

1411:                                             ; preds = %1188, %1400
  %1412 = phi <2 x double> [ %1410, %1400 ], [ %1247, %1188 ]
  %1413 = phi <2 x double> [ %1407, %1400 ], [ %1088, %1188 ]
  %1414 = phi <2 x double> [ %1330, %1400 ], [ %1249, %1188 ]
  %1415 = fsub <2 x double> %1244, %1412
  %1416 = select <2 x i1> %698, <2 x double> %1132, <2 x double> %1242
  store <2 x double> %1416, ptr %1131, align 16, !tbaa !26
  %1417 = select <2 x i1> %698, <2 x double> %1090, <2 x double> %1415
  store <2 x double> %1417, ptr %1089, align 16, !tbaa !26
  %1418 = getelementptr inbounds nuw i8, ptr %784, i64 784
  %1419 = load <2 x double>, ptr %1418, align 16, !tbaa !26
  %1420 = select <2 x i1> %698, <2 x double> %1419, <2 x double> %1412
  store <2 x double> %1420, ptr %1418, align 16, !tbaa !26
  %1421 = getelementptr inbounds nuw i8, ptr %784, i64 752
  %1422 = and <2 x i64> %1111, %538
  %1423 = load <2 x double>, ptr %1421, align 16, !tbaa !26
  %1424 = icmp eq <2 x i64> %1422, zeroinitializer
  %1425 = select <2 x i1> %1424, <2 x double> %1423, <2 x double> %1414
  store <2 x double> %1425, ptr %1421, align 16, !tbaa !26
  %1426 = select <2 x i1> %1424, <2 x double> %1088, <2 x double> %1413
  store <2 x double> %1426, ptr %818, align 16, !tbaa !26
  %1427 = add nuw nsw i64 %782, 1
  %1428 = load i64, ptr %169, align 8, !tbaa !20
  %1429 = icmp slt i64 %1427, %1428
  br i1 %1429, label %781, label %1454, !llvm.loop !76

1430:                                             ; preds = %1442, %781
  %1431 = phi i64 [ 0, %781 ], [ %1453, %1442 ]
  %1432 = getelementptr inbounds nuw [14 x <2 x double>], ptr %818, i64 0, i64 %1431
  %1433 = getelementptr inbounds nuw [14 x <2 x double>], ptr %819, i64 0, i64 %1431
  %1434 = load <2 x double>, ptr %1433, align 16, !tbaa !26
  %1435 = getelementptr inbounds nuw [14 x <2 x double>], ptr %820, i64 0, i64 %1431
  %1436 = load <2 x double>, ptr %1435, align 16, !tbaa !26
  %1437 = fsub <2 x double> %1434, %1436
  %1438 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %817, <2 x double> %1437, <2 x double> %1434)
  %1439 = load <2 x double>, ptr %1432, align 16, !tbaa !26
  %1440 = select <2 x i1> %698, <2 x double> %1439, <2 x double> %1438
  store <2 x double> %1440, ptr %1432, align 16, !tbaa !26
  %1441 = icmp eq i64 %1431, 12
  br i1 %1441, label %821, label %1442, !llvm.loop !77

1442:                                             ; preds = %1430
  %1443 = or disjoint i64 %1431, 1
  %1444 = getelementptr inbounds nuw [14 x <2 x double>], ptr %818, i64 0, i64 %1443
  %1445 = getelementptr inbounds nuw [14 x <2 x double>], ptr %819, i64 0, i64 %1443
  %1446 = load <2 x double>, ptr %1445, align 16, !tbaa !26
  %1447 = getelementptr inbounds nuw [14 x <2 x double>], ptr %820, i64 0, i64 %1443
  %1448 = load <2 x double>, ptr %1447, align 16, !tbaa !26
  %1449 = fsub <2 x double> %1446, %1448
  %1450 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %817, <2 x double> %1449, <2 x double> %1446)
  %1451 = load <2 x double>, ptr %1444, align 16, !tbaa !26
  %1452 = select <2 x i1> %698, <2 x double> %1451, <2 x double> %1450
  store <2 x double> %1452, ptr %1444, align 16, !tbaa !26
  %1453 = add nuw nsw i64 %1431, 2
  br label %1430

1454:                                             ; preds = %1411, %672
  %1455 = phi i64 [ %777, %672 ], [ %1428, %1411 ]
  %1456 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %1457 = fcmp ogt <2 x double> %1456, zeroinitializer
  %1458 = select <2 x i1> %1457, <2 x i64> %538, <2 x i64> zeroinitializer
  %1459 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1458)
  %1460 = icmp eq i64 %1459, 0
  br i1 %1460, label %1467, label %1461

1461:                                             ; preds = %1454
  %1462 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, <2 x i64> noundef %1458) #7
  %1463 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %1464 = icmp eq <2 x i64> %1458, zeroinitializer
  %1465 = select <2 x i1> %1464, <2 x double> %1463, <2 x double> %1462
  store <2 x double> %1465, ptr %178, align 16, !tbaa !26
  %1466 = load i64, ptr %169, align 8, !tbaa !20
  br label %1467

1467:                                             ; preds = %1454, %1461, %536
  %1468 = phi i64 [ %1455, %1454 ], [ %1466, %1461 ], [ %541, %536 ]
  %1469 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %1470 = icmp eq <2 x i64> %538, zeroinitializer
  %1471 = select <2 x i1> %1470, <2 x double> %1469, <2 x double> zeroinitializer
  store <2 x double> %1471, ptr %182, align 16, !tbaa !26
  %1472 = icmp sgt i64 %1468, 0
  br i1 %1472, label %1475, label %1473

1473:                                             ; preds = %1467
  %1474 = load <2 x double>, ptr %184, align 16, !tbaa !26
  br label %2318

1475:                                             ; preds = %1467
  %1476 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %1477 = xor <2 x i64> %538, splat (i64 -1)
  %1478 = and <2 x i64> %1476, %1477
  %1479 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1478)
  %1480 = icmp eq i64 %1479, 0
  %1481 = icmp eq <2 x i64> %1478, zeroinitializer
  br label %1485

1482:                                             ; preds = %2312
  %1483 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %1484 = icmp sgt i64 %2316, 0
  br i1 %1484, label %2323, label %2318

1485:                                             ; preds = %1475, %2312
  %1486 = phi i64 [ 0, %1475 ], [ %2315, %2312 ]
  %1487 = load ptr, ptr %142, align 8, !tbaa !28
  %1488 = getelementptr inbounds nuw %struct.Piece, ptr %1487, i64 %1486
  br i1 %1480, label %1489, label %1516

1489:                                             ; preds = %1485
  %1490 = getelementptr inbounds nuw i8, ptr %1488, i64 2112
  %1491 = load <2 x i64>, ptr %1490, align 16, !tbaa !26
  %1492 = getelementptr inbounds nuw i8, ptr %1488, i64 768
  %1493 = load <2 x double>, ptr %1492, align 16, !tbaa !26
  %1494 = getelementptr inbounds nuw i8, ptr %1488, i64 1936
  %1495 = load <2 x double>, ptr %1494, align 16, !tbaa !26
  %1496 = getelementptr inbounds nuw i8, ptr %1488, i64 1424
  %1497 = load <2 x double>, ptr %1496, align 16, !tbaa !26
  %1498 = getelementptr inbounds nuw i8, ptr %1488, i64 1440
  %1499 = load <2 x double>, ptr %1498, align 16, !tbaa !26
  %1500 = getelementptr inbounds nuw i8, ptr %1488, i64 2080
  %1501 = load <2 x i64>, ptr %1500, align 16, !tbaa !26
  %1502 = getelementptr inbounds nuw i8, ptr %1488, i64 496
  %1503 = load <2 x double>, ptr %1502, align 16, !tbaa !26
  %1504 = load <2 x double>, ptr %1488, align 16, !tbaa !26
  %1505 = getelementptr inbounds nuw i8, ptr %1488, i64 736
  %1506 = load <2 x double>, ptr %1505, align 16, !tbaa !26
  %1507 = getelementptr inbounds nuw i8, ptr %1488, i64 1952
  %1508 = load <2 x double>, ptr %1507, align 16, !tbaa !26
  %1509 = getelementptr inbounds nuw i8, ptr %1488, i64 1408
  %1510 = load <2 x double>, ptr %1509, align 16, !tbaa !26
  %1511 = getelementptr inbounds nuw i8, ptr %1488, i64 1504
  %1512 = load <2 x double>, ptr %1511, align 16, !tbaa !26
  %1513 = fmul <2 x double> %1493, %1495
  %1514 = fsub <2 x double> %1504, %1506
  %1515 = fmul <2 x double> %1514, %1508
  br label %1669

1516:                                             ; preds = %1485
  %1517 = getelementptr inbounds nuw i8, ptr %1488, i64 800
  %1518 = getelementptr inbounds nuw i8, ptr %1488, i64 768
  %1519 = load <2 x double>, ptr %1518, align 16, !tbaa !26, !noalias !78
  %1520 = getelementptr inbounds nuw i8, ptr %1488, i64 1936
  %1521 = load <2 x double>, ptr %1520, align 16, !tbaa !26, !noalias !78
  %1522 = fmul <2 x double> %1519, %1521
  %1523 = fcmp ogt <2 x double> %1522, zeroinitializer
  %1524 = select <2 x i1> %1523, <2 x double> %1522, <2 x double> zeroinitializer
  %1525 = fcmp uge <2 x double> %1524, splat (double 1.000000e+00)
  %1526 = select <2 x i1> %1525, <2 x double> splat (double 1.000000e+00), <2 x double> %1524
  %1527 = getelementptr inbounds nuw i8, ptr %1488, i64 2112
  %1528 = load <2 x i64>, ptr %1527, align 16, !tbaa !26, !noalias !78
  %1529 = load <2 x double>, ptr %180, align 16, !tbaa !26, !noalias !78
  %1530 = load <2 x double>, ptr %1517, align 16, !tbaa !26, !noalias !78
  %1531 = icmp eq <2 x i64> %1528, zeroinitializer
  %1532 = select <2 x i1> %1531, <2 x double> %1530, <2 x double> %1529
  %1533 = getelementptr inbounds nuw i8, ptr %1488, i64 896
  %1534 = load <2 x double>, ptr %1533, align 16, !tbaa !26, !noalias !78
  %1535 = fsub <2 x double> splat (double 1.000000e+00), %1526
  %1536 = getelementptr inbounds nuw i8, ptr %1488, i64 496
  %1537 = load <2 x double>, ptr %1536, align 16, !tbaa !26, !noalias !78
  %1538 = getelementptr inbounds nuw i8, ptr %1488, i64 2080
  %1539 = load <2 x i64>, ptr %1538, align 16, !tbaa !26, !noalias !78
  %1540 = load <2 x double>, ptr %1488, align 16, !tbaa !26, !noalias !78
  %1541 = getelementptr inbounds nuw i8, ptr %1488, i64 736
  %1542 = load <2 x double>, ptr %1541, align 16, !tbaa !26, !noalias !78
  %1543 = fsub <2 x double> %1540, %1542
  %1544 = getelementptr inbounds nuw i8, ptr %1488, i64 1952
  %1545 = load <2 x double>, ptr %1544, align 16, !tbaa !26, !noalias !78
  %1546 = fmul <2 x double> %1543, %1545
  %1547 = icmp eq <2 x i64> %1539, zeroinitializer
  %1548 = select <2 x i1> %1547, <2 x double> zeroinitializer, <2 x double> %1546
  %1549 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1535, <2 x double> %1537, <2 x double> %1548)
  %1550 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1534, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1551 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1534, <2 x double> %1550, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1552 = fdiv <2 x double> splat (double 1.000000e+00), %1551
  %1553 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1532, <2 x double> %1549, <2 x double> splat (double 1.000000e+00))
  %1554 = fdiv <2 x double> splat (double 1.000000e+00), %1553
  %1555 = load <2 x double>, ptr %181, align 16, !tbaa !26, !noalias !78
  %1556 = load <2 x double>, ptr %178, align 16, !tbaa !26, !noalias !78
  %1557 = select <2 x i1> %1531, <2 x double> %1556, <2 x double> %1555
  %1558 = fsub <2 x double> %1557, %1534
  %1559 = fmul <2 x double> %1558, %1554
  %1560 = fmul <2 x double> %1532, %1559
  %1561 = getelementptr inbounds nuw i8, ptr %1488, i64 1408
  %1562 = load <2 x double>, ptr %1561, align 16, !tbaa !26, !noalias !78
  %1563 = getelementptr inbounds nuw i8, ptr %1488, i64 816
  %1564 = load <2 x double>, ptr %1563, align 16, !tbaa !26, !noalias !78
  %1565 = getelementptr inbounds nuw i8, ptr %1488, i64 1424
  %1566 = load <2 x double>, ptr %1565, align 16, !tbaa !26, !noalias !78
  %1567 = getelementptr inbounds nuw i8, ptr %1488, i64 1040
  %1568 = load <2 x double>, ptr %1567, align 16, !tbaa !26, !noalias !78
  %1569 = fmul <2 x double> %1566, %1568
  %1570 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1562, <2 x double> %1564, <2 x double> %1569)
  %1571 = getelementptr inbounds nuw i8, ptr %1488, i64 1440
  %1572 = load <2 x double>, ptr %1571, align 16, !tbaa !26, !noalias !78
  %1573 = getelementptr inbounds nuw i8, ptr %1488, i64 1264
  %1574 = load <2 x double>, ptr %1573, align 16, !tbaa !26, !noalias !78
  %1575 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1572, <2 x double> %1574, <2 x double> %1570)
  %1576 = getelementptr inbounds nuw i8, ptr %1488, i64 208
  %1577 = load <2 x double>, ptr %1576, align 16, !tbaa !26, !noalias !78
  %1578 = fdiv <2 x double> %1545, %1577
  %1579 = fcmp ule <2 x double> %1526, zeroinitializer
  %1580 = or <2 x i1> %1525, %1579
  %1581 = fmul <2 x double> %1521, %1537
  %1582 = select <2 x i1> %1580, <2 x double> zeroinitializer, <2 x double> %1581
  %1583 = select <2 x i1> %1547, <2 x double> %1582, <2 x double> %1578
  %1584 = fmul <2 x double> %1532, %1560
  %1585 = fmul <2 x double> %1554, %1584
  %1586 = fmul <2 x double> %1552, %1585
  %1587 = fmul <2 x double> %1586, %1583
  %1588 = fdiv <2 x double> %1587, %1562
  %1589 = fadd <2 x double> %1588, splat (double 1.000000e+00)
  %1590 = fdiv <2 x double> splat (double 1.000000e+00), %1589
  %1591 = getelementptr inbounds nuw i8, ptr %1488, i64 864
  %1592 = load <2 x double>, ptr %1591, align 16, !tbaa !26, !noalias !78
  %1593 = fsub <2 x double> %1560, %1592
  %1594 = getelementptr inbounds nuw i8, ptr %1488, i64 1520
  %1595 = load <2 x double>, ptr %1594, align 16, !tbaa !26, !noalias !78
  %1596 = fsub <2 x double> %1575, %1595
  %1597 = fmul <2 x double> %1596, %1588
  %1598 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1593, <2 x double> %1552, <2 x double> %1597)
  %1599 = fmul <2 x double> %1598, %1590
  %1600 = getelementptr inbounds nuw i8, ptr %1488, i64 1504
  %1601 = load <2 x double>, ptr %1600, align 16, !tbaa !26, !noalias !78
  %1602 = fcmp ule <2 x double> %1601, zeroinitializer
  %1603 = fcmp ule <2 x double> %1599, zeroinitializer
  %1604 = or <2 x i1> %1602, %1603
  %1605 = select <2 x i1> %1604, <2 x double> zeroinitializer, <2 x double> %1599
  %1606 = getelementptr inbounds nuw i8, ptr %1488, i64 544
  %1607 = load <2 x double>, ptr %1606, align 16, !tbaa !26, !noalias !78
  %1608 = fcmp ogt <2 x double> %1607, zeroinitializer
  %1609 = getelementptr inbounds nuw i8, ptr %1488, i64 256
  %1610 = load <2 x double>, ptr %1609, align 16, !tbaa !26, !noalias !78
  %1611 = bitcast <2 x i1> %1608 to i2
  %1612 = icmp eq i2 %1611, 0
  br i1 %1612, label %1625, label %1613

1613:                                             ; preds = %1516
  %1614 = getelementptr inbounds nuw i8, ptr %1488, i64 912
  %1615 = load <2 x double>, ptr %1614, align 16, !tbaa !26, !noalias !78
  %1616 = fadd <2 x double> %1559, %1615
  %1617 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1616)
  %1618 = fcmp ogt <2 x double> %1607, splat (double 1.000000e-09)
  %1619 = select <2 x i1> %1618, <2 x double> %1607, <2 x double> splat (double 1.000000e-09)
  %1620 = fdiv <2 x double> %1617, %1619
  %1621 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1620)
  %1622 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1621)
  %1623 = select <2 x i1> %1608, <2 x double> %1622, <2 x double> splat (double 1.000000e+00)
  %1624 = fmul <2 x double> %1610, %1623
  br label %1625

1625:                                             ; preds = %1613, %1516
  %1626 = phi <2 x double> [ %1624, %1613 ], [ %1610, %1516 ]
  %1627 = getelementptr inbounds nuw i8, ptr %1488, i64 1024
  %1628 = load <2 x double>, ptr %1627, align 16, !tbaa !26, !noalias !78
  %1629 = getelementptr inbounds nuw i8, ptr %1488, i64 1248
  %1630 = load <2 x double>, ptr %1629, align 16, !tbaa !26, !noalias !78
  %1631 = fmul <2 x double> %1572, %1630
  %1632 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1566, <2 x double> %1628, <2 x double> %1631)
  %1633 = getelementptr inbounds nuw i8, ptr %1488, i64 304
  %1634 = load <2 x double>, ptr %1633, align 16, !tbaa !26, !noalias !78
  %1635 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1634, <2 x double> %1562, <2 x double> splat (double 1.000000e+00))
  %1636 = fdiv <2 x double> splat (double 1.000000e+00), %1635
  %1637 = fmul <2 x double> %1554, %1559
  %1638 = fmul <2 x double> %1552, %1637
  %1639 = fmul <2 x double> %1638, %1590
  %1640 = select <2 x i1> %1604, <2 x double> zeroinitializer, <2 x double> %1639
  %1641 = getelementptr inbounds nuw i8, ptr %1488, i64 272
  %1642 = load <2 x double>, ptr %1641, align 16, !tbaa !26, !noalias !78
  %1643 = fmul <2 x double> %1626, splat (double 2.500000e-01)
  %1644 = fmul <2 x double> %1549, %1643
  %1645 = fneg <2 x double> %1554
  %1646 = fmul <2 x double> %1644, %1645
  %1647 = select <2 x i1> %1608, <2 x double> %1646, <2 x double> splat (double -0.000000e+00)
  %1648 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1642, <2 x double> %1640, <2 x double> %1647)
  %1649 = fadd <2 x double> %1595, %1605
  %1650 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1642, <2 x double> %1649, <2 x double> %1626)
  %1651 = fneg <2 x double> %1634
  %1652 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1651, <2 x double> %1632, <2 x double> %1650)
  %1653 = fneg <2 x double> %1532
  %1654 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1636, <2 x double> %1652, <2 x double> %1653)
  %1655 = fmul <2 x double> %1636, %1648
  %1656 = fcmp olt <2 x double> %1655, splat (double 8.000000e-01)
  %1657 = select <2 x i1> %1656, <2 x double> %1655, <2 x double> splat (double 8.000000e-01)
  %1658 = fsub <2 x double> splat (double 1.000000e+00), %1657
  %1659 = fdiv <2 x double> %1654, %1658
  %1660 = fadd <2 x double> %1532, %1659
  %1661 = getelementptr inbounds nuw i8, ptr %1488, i64 288
  %1662 = load <2 x double>, ptr %1661, align 16, !tbaa !26, !noalias !78
  %1663 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1651, <2 x double> %1632, <2 x double> %1662)
  %1664 = fmul <2 x double> %1636, %1663
  %1665 = fcmp olt <2 x double> %1660, %1664
  %1666 = select <2 x i1> %1665, <2 x double> %1660, <2 x double> %1664
  %1667 = select <2 x i1> %1531, <2 x double> %1666, <2 x double> %1529
  %1668 = select <2 x i1> %1481, <2 x double> %1530, <2 x double> %1667
  store <2 x double> %1668, ptr %1517, align 16, !tbaa !26
  br label %1669

1669:                                             ; preds = %1489, %1625
  %1670 = phi <2 x double> [ %1515, %1489 ], [ %1546, %1625 ]
  %1671 = phi <2 x double> [ %1514, %1489 ], [ %1543, %1625 ]
  %1672 = phi <2 x double> [ %1513, %1489 ], [ %1522, %1625 ]
  %1673 = phi <2 x double> [ %1512, %1489 ], [ %1601, %1625 ]
  %1674 = phi <2 x double> [ %1510, %1489 ], [ %1562, %1625 ]
  %1675 = phi <2 x double> [ %1506, %1489 ], [ %1542, %1625 ]
  %1676 = phi <2 x double> [ %1503, %1489 ], [ %1537, %1625 ]
  %1677 = phi <2 x i64> [ %1501, %1489 ], [ %1539, %1625 ]
  %1678 = phi <2 x double> [ %1499, %1489 ], [ %1572, %1625 ]
  %1679 = phi <2 x double> [ %1497, %1489 ], [ %1566, %1625 ]
  %1680 = phi <2 x i64> [ %1491, %1489 ], [ %1528, %1625 ]
  %1681 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %1682 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %1683 = icmp eq <2 x i64> %1680, zeroinitializer
  %1684 = select <2 x i1> %1683, <2 x double> %1682, <2 x double> %1681
  %1685 = getelementptr inbounds nuw i8, ptr %1488, i64 1472
  store <2 x double> %1684, ptr %1685, align 16, !tbaa !26
  %1686 = fcmp ogt <2 x double> %1672, zeroinitializer
  %1687 = select <2 x i1> %1686, <2 x double> %1672, <2 x double> zeroinitializer
  %1688 = fcmp olt <2 x double> %1687, splat (double 1.000000e+00)
  %1689 = select <2 x i1> %1688, <2 x double> %1687, <2 x double> splat (double 1.000000e+00)
  %1690 = getelementptr inbounds nuw i8, ptr %1488, i64 528
  %1691 = load <2 x double>, ptr %1690, align 16, !tbaa !26
  %1692 = fmul <2 x double> %1689, splat (double 4.180000e+03)
  %1693 = getelementptr inbounds nuw i8, ptr %1488, i64 224
  %1694 = load <2 x double>, ptr %1693, align 16, !tbaa !26
  %1695 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1692, <2 x double> %1694, <2 x double> %1691)
  %1696 = getelementptr inbounds nuw i8, ptr %1488, i64 1424
  %1697 = getelementptr inbounds nuw i8, ptr %1488, i64 1120
  %1698 = load <2 x double>, ptr %1697, align 16, !tbaa !26
  %1699 = getelementptr inbounds nuw i8, ptr %1488, i64 1440
  %1700 = getelementptr inbounds nuw i8, ptr %1488, i64 1344
  %1701 = load <2 x double>, ptr %1700, align 16, !tbaa !26
  %1702 = fmul <2 x double> %1678, %1701
  %1703 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1679, <2 x double> %1698, <2 x double> %1702)
  %1704 = getelementptr inbounds nuw i8, ptr %1488, i64 2080
  %1705 = fcmp ule <2 x double> %1691, zeroinitializer
  %1706 = getelementptr inbounds nuw i8, ptr %1488, i64 1824
  store <2 x double> %1689, ptr %1706, align 16, !tbaa !26
  %1707 = fsub <2 x double> splat (double 1.000000e+00), %1689
  %1708 = getelementptr inbounds nuw i8, ptr %1488, i64 736
  %1709 = icmp eq <2 x i64> %1677, zeroinitializer
  %1710 = select <2 x i1> %1709, <2 x double> zeroinitializer, <2 x double> %1670
  %1711 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1707, <2 x double> %1676, <2 x double> %1710)
  %1712 = getelementptr inbounds nuw i8, ptr %1488, i64 2064
  store <2 x double> %1711, ptr %1712, align 16, !tbaa !26
  %1713 = getelementptr inbounds nuw i8, ptr %1488, i64 1408
  %1714 = fmul <2 x double> %1695, %1674
  %1715 = icmp eq <2 x i64> %1677, splat (i64 -1)
  %1716 = select <2 x i1> %1705, <2 x i1> splat (i1 true), <2 x i1> %1715
  %1717 = select <2 x i1> %1716, <2 x double> zeroinitializer, <2 x double> %1714
  %1718 = getelementptr inbounds nuw i8, ptr %1488, i64 1840
  store <2 x double> %1717, ptr %1718, align 16, !tbaa !26
  %1719 = fmul <2 x double> %1695, %1703
  %1720 = select <2 x i1> %1716, <2 x double> zeroinitializer, <2 x double> %1719
  %1721 = getelementptr inbounds nuw i8, ptr %1488, i64 1856
  store <2 x double> %1720, ptr %1721, align 16, !tbaa !26
  %1722 = getelementptr inbounds nuw i8, ptr %1488, i64 480
  %1723 = load <2 x double>, ptr %1722, align 16, !tbaa !26
  %1724 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1707, <2 x double> %1723, <2 x double> %1671)
  %1725 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %1726 = fdiv <2 x double> splat (double 1.000000e+00), %1725
  %1727 = getelementptr inbounds nuw i8, ptr %1488, i64 560
  %1728 = load <2 x double>, ptr %1727, align 16, !tbaa !26
  %1729 = fcmp ogt <2 x double> %1728, splat (double 1.000000e-30)
  %1730 = select <2 x i1> %1729, <2 x double> %1728, <2 x double> splat (double 1.000000e-30)
  %1731 = fdiv <2 x double> %1724, %1730
  %1732 = fadd <2 x double> %1726, %1731
  %1733 = getelementptr inbounds nuw i8, ptr %1488, i64 1872
  store <2 x double> %1732, ptr %1733, align 16, !tbaa !26
  %1734 = getelementptr inbounds nuw i8, ptr %1488, i64 1792
  store <2 x double> %1673, ptr %1734, align 16, !tbaa !26
  %1735 = getelementptr inbounds nuw i8, ptr %1488, i64 640
  %1736 = load <2 x double>, ptr %1735, align 16, !tbaa !26
  %1737 = getelementptr inbounds nuw i8, ptr %1488, i64 656
  %1738 = load <2 x double>, ptr %1737, align 16, !tbaa !26
  %1739 = getelementptr inbounds nuw i8, ptr %1488, i64 672
  %1740 = load <2 x double>, ptr %1739, align 16, !tbaa !26
  %1741 = getelementptr inbounds nuw i8, ptr %1488, i64 688
  %1742 = load <2 x double>, ptr %1741, align 16, !tbaa !26
  %1743 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1742, <2 x double> %1740)
  %1744 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1743, <2 x double> %1738)
  %1745 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1744, <2 x double> %1736)
  %1746 = getelementptr inbounds nuw i8, ptr %1488, i64 944
  store <2 x double> %1745, ptr %1746, align 16, !tbaa !26
  %1747 = getelementptr inbounds nuw i8, ptr %1488, i64 1168
  %1748 = load <2 x double>, ptr %1747, align 16, !tbaa !26
  %1749 = fmul <2 x double> %1679, %1748
  %1750 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1674, <2 x double> %1745, <2 x double> %1749)
  %1751 = getelementptr inbounds nuw i8, ptr %1488, i64 1392
  %1752 = load <2 x double>, ptr %1751, align 16, !tbaa !26
  %1753 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1678, <2 x double> %1752, <2 x double> %1750)
  %1754 = fmul <2 x double> %1753, splat (double 5.000000e-01)
  %1755 = getelementptr inbounds nuw i8, ptr %1488, i64 1776
  store <2 x double> %1754, ptr %1755, align 16, !tbaa !26
  %1756 = getelementptr inbounds nuw i8, ptr %1488, i64 576
  %1757 = load <2 x double>, ptr %1756, align 16, !tbaa !26
  %1758 = getelementptr inbounds nuw i8, ptr %1488, i64 592
  %1759 = load <2 x double>, ptr %1758, align 16, !tbaa !26
  %1760 = getelementptr inbounds nuw i8, ptr %1488, i64 608
  %1761 = load <2 x double>, ptr %1760, align 16, !tbaa !26
  %1762 = getelementptr inbounds nuw i8, ptr %1488, i64 624
  %1763 = load <2 x double>, ptr %1762, align 16, !tbaa !26
  %1764 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1763, <2 x double> %1761)
  %1765 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1764, <2 x double> %1759)
  %1766 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1765, <2 x double> %1757)
  %1767 = getelementptr inbounds nuw i8, ptr %1488, i64 1760
  store <2 x double> %1766, ptr %1767, align 16, !tbaa !26
  %1768 = getelementptr inbounds nuw i8, ptr %1488, i64 2128
  %1769 = load i64, ptr %1768, align 16, !tbaa !31
  %1770 = icmp eq i64 %1769, 0
  %1771 = getelementptr inbounds nuw i8, ptr %1488, i64 16
  %1772 = load <2 x double>, ptr %1771, align 16
  %1773 = fsub <2 x double> %1675, %1772
  %1774 = fdiv <2 x double> splat (double 1.000000e+00), %1773
  %1775 = fdiv <2 x double> %1766, %1675
  %1776 = select i1 %1770, <2 x double> %1775, <2 x double> %1774
  %1777 = load i64, ptr %132, align 16, !tbaa !21
  %1778 = getelementptr inbounds nuw i8, ptr %1488, i64 2248
  %1779 = load ptr, ptr %1778, align 8, !tbaa !36
  br i1 %1770, label %1780, label %1784

1780:                                             ; preds = %1669
  %1781 = getelementptr inbounds <2 x double>, ptr %1779, i64 %1777
  %1782 = load <2 x double>, ptr %1781, align 16, !tbaa !26
  %1783 = fmul <2 x double> %1776, %1782
  br label %1800

1784:                                             ; preds = %1669
  %1785 = shl nsw i64 %1777, 6
  %1786 = getelementptr inbounds i8, ptr %1779, i64 %1785
  %1787 = load <2 x double>, ptr %1786, align 16, !tbaa !26
  %1788 = getelementptr inbounds nuw i8, ptr %1786, i64 16
  %1789 = load <2 x double>, ptr %1788, align 16, !tbaa !26
  %1790 = getelementptr inbounds nuw i8, ptr %1786, i64 32
  %1791 = load <2 x double>, ptr %1790, align 16, !tbaa !26
  %1792 = getelementptr inbounds nuw i8, ptr %1786, i64 48
  %1793 = load <2 x double>, ptr %1792, align 16, !tbaa !26
  %1794 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1793, <2 x double> %1791)
  %1795 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1794, <2 x double> %1789)
  %1796 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1795, <2 x double> %1787)
  %1797 = icmp sgt i64 %1777, %1769
  %1798 = fmul <2 x double> %1776, %1796
  %1799 = select i1 %1797, <2 x double> %1798, <2 x double> %1796
  br label %1800

1800:                                             ; preds = %1780, %1784
  %1801 = phi <2 x double> [ %1783, %1780 ], [ %1799, %1784 ]
  %1802 = getelementptr inbounds nuw i8, ptr %1488, i64 800
  %1803 = load <2 x double>, ptr %1802, align 16, !tbaa !26
  %1804 = getelementptr inbounds nuw i8, ptr %1488, i64 1488
  %1805 = load <2 x double>, ptr %1804, align 16, !tbaa !26
  %1806 = fcmp ogt <2 x double> %1671, splat (double 0x3D719799812DEA11)
  %1807 = select <2 x i1> %1806, <2 x double> %1671, <2 x double> splat (double 0x3D719799812DEA11)
  %1808 = getelementptr inbounds nuw i8, ptr %1488, i64 1728
  store <2 x double> %1774, ptr %1808, align 16, !tbaa !26
  %1809 = getelementptr inbounds nuw i8, ptr %1488, i64 176
  %1810 = load <2 x double>, ptr %1809, align 16, !tbaa !26
  %1811 = fdiv <2 x double> %1810, %1807
  %1812 = getelementptr inbounds nuw i8, ptr %1488, i64 1744
  store <2 x double> %1811, ptr %1812, align 16, !tbaa !26
  %1813 = getelementptr inbounds nuw i8, ptr %1488, i64 2136
  %1814 = load ptr, ptr %1813, align 8, !tbaa !58
  %1815 = load i64, ptr %132, align 16, !tbaa !21
  %1816 = getelementptr <2 x double>, ptr %1814, i64 %1815
  %1817 = getelementptr i8, ptr %1816, i64 -16
  %1818 = load <2 x double>, ptr %1817, align 16, !tbaa !26
  %1819 = fadd <2 x double> %1805, %1818
  %1820 = fmul <2 x double> %1819, splat (double 5.000000e-01)
  %1821 = getelementptr inbounds nuw i8, ptr %1488, i64 48
  %1822 = load <2 x double>, ptr %1821, align 16, !tbaa !26
  %1823 = getelementptr inbounds nuw i8, ptr %1488, i64 64
  %1824 = load <2 x double>, ptr %1823, align 16, !tbaa !26
  %1825 = getelementptr inbounds nuw i8, ptr %1488, i64 80
  %1826 = load <2 x double>, ptr %1825, align 16, !tbaa !26
  %1827 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1820, <2 x double> %1826, <2 x double> %1824)
  %1828 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1820, <2 x double> %1827, <2 x double> %1822)
  %1829 = fmul <2 x double> %1801, %1828
  %1830 = fmul <2 x double> %1689, %1829
  %1831 = getelementptr inbounds nuw i8, ptr %1488, i64 512
  %1832 = load <2 x double>, ptr %1831, align 16, !tbaa !26
  %1833 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1830, <2 x double> %1832, <2 x double> splat (double 1.000000e+00))
  %1834 = fdiv <2 x double> splat (double 1.000000e+00), %1833
  %1835 = select <2 x i1> %1709, <2 x double> %1834, <2 x double> splat (double 1.000000e+00)
  %1836 = getelementptr inbounds nuw i8, ptr %1488, i64 1808
  store <2 x double> %1835, ptr %1836, align 16, !tbaa !26
  %1837 = fmul <2 x double> %1829, %1835
  %1838 = getelementptr inbounds nuw i8, ptr %1488, i64 1600
  store <2 x double> %1837, ptr %1838, align 16, !tbaa !26
  %1839 = fmul <2 x double> %1754, splat (double 2.000000e+00)
  %1840 = getelementptr inbounds nuw i8, ptr %1488, i64 96
  %1841 = load <2 x double>, ptr %1840, align 16, !tbaa !26
  %1842 = getelementptr inbounds nuw i8, ptr %1488, i64 112
  %1843 = load <2 x double>, ptr %1842, align 16, !tbaa !26
  %1844 = getelementptr inbounds nuw i8, ptr %1488, i64 128
  %1845 = load <2 x double>, ptr %1844, align 16, !tbaa !26
  %1846 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1805, <2 x double> %1845, <2 x double> %1843)
  %1847 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1805, <2 x double> %1846, <2 x double> %1841)
  %1848 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1839, <2 x double> %1847, <2 x double> %1837)
  %1849 = getelementptr inbounds nuw i8, ptr %1488, i64 1632
  store <2 x double> %1848, ptr %1849, align 16, !tbaa !26
  %1850 = fmul <2 x double> %1707, %1803
  %1851 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1850, <2 x double> %1676, <2 x double> splat (double 1.000000e+00))
  %1852 = fdiv <2 x double> %1803, %1851
  %1853 = load i64, ptr %133, align 8, !tbaa !22
  %1854 = sitofp i64 %1853 to double
  %1855 = fmul double %1854, 2.000000e+00
  %1856 = insertelement <2 x double> poison, double %1855, i64 0
  %1857 = shufflevector <2 x double> %1856, <2 x double> poison, <2 x i32> zeroinitializer
  %1858 = fmul <2 x double> %1811, %1857
  %1859 = fadd <2 x double> %1852, %1858
  %1860 = fdiv <2 x double> %1852, %1859
  %1861 = fmul <2 x double> %1766, %1858
  %1862 = select <2 x i1> %1709, <2 x double> %1852, <2 x double> %1861
  %1863 = getelementptr inbounds nuw i8, ptr %1488, i64 1616
  store <2 x double> %1862, ptr %1863, align 16, !tbaa !26
  %1864 = fmul <2 x double> %1858, %1860
  %1865 = select <2 x i1> %1709, <2 x double> %1852, <2 x double> %1864
  %1866 = getelementptr inbounds nuw i8, ptr %1488, i64 1648
  store <2 x double> %1865, ptr %1866, align 16, !tbaa !26
  %1867 = select <2 x i1> %1709, <2 x double> splat (double 1.000000e+00), <2 x double> %1860
  %1868 = getelementptr inbounds nuw i8, ptr %1488, i64 1664
  store <2 x double> %1867, ptr %1868, align 16, !tbaa !26
  br i1 %1770, label %2030, label %1869

1869:                                             ; preds = %1800
  %1870 = getelementptr inbounds nuw i8, ptr %1488, i64 144
  %1871 = load <2 x double>, ptr %1870, align 16, !tbaa !26
  %1872 = getelementptr inbounds nuw i8, ptr %1488, i64 160
  %1873 = load <2 x double>, ptr %1872, align 16, !tbaa !26
  %1874 = getelementptr inbounds nuw i8, ptr %1488, i64 384
  %1875 = load <2 x double>, ptr %1874, align 16, !tbaa !26
  %1876 = load i64, ptr %132, align 16, !tbaa !21
  %1877 = fsub <2 x double> %1745, %1875
  %1878 = fmul <2 x double> %1843, splat (double 5.000000e-01)
  %1879 = fmul <2 x double> %1845, splat (double 0x3FE5555555555555)
  %1880 = getelementptr inbounds nuw i8, ptr %1488, i64 2224
  %1881 = load ptr, ptr %1880, align 16, !tbaa !73
  %1882 = getelementptr inbounds nuw i8, ptr %1488, i64 2232
  %1883 = load ptr, ptr %1882, align 8, !tbaa !49
  %1884 = getelementptr inbounds nuw i8, ptr %1488, i64 2160
  %1885 = load ptr, ptr %1884, align 16, !tbaa !59
  %1886 = getelementptr inbounds nuw i8, ptr %1488, i64 2200
  %1887 = load ptr, ptr %1886, align 8, !tbaa !81
  %1888 = getelementptr inbounds nuw i8, ptr %1488, i64 2208
  %1889 = load ptr, ptr %1888, align 16, !tbaa !82
  %1890 = getelementptr inbounds nuw i8, ptr %1488, i64 2216
  %1891 = load ptr, ptr %1890, align 8, !tbaa !83
  %1892 = getelementptr inbounds nuw i8, ptr %1488, i64 2184
  %1893 = load ptr, ptr %1892, align 8, !tbaa !84
  %1894 = getelementptr inbounds nuw i8, ptr %1488, i64 2192
  %1895 = load ptr, ptr %1894, align 16, !tbaa !85
  %1896 = icmp sgt i64 %1876, 0
  br i1 %1896, label %1897, label %2142

1897:                                             ; preds = %1869
  %1898 = load <2 x double>, ptr %1814, align 16, !tbaa !26
  %1899 = getelementptr inbounds nuw i8, ptr %1488, i64 720
  %1900 = load <2 x double>, ptr %1899, align 16, !tbaa !26
  %1901 = getelementptr inbounds nuw i8, ptr %1488, i64 704
  %1902 = load <2 x double>, ptr %1901, align 16, !tbaa !26
  %1903 = fmul <2 x double> %1754, splat (double -2.000000e+00)
  %1904 = fmul <2 x double> %1903, %1805
  %1905 = fmul <2 x double> %1805, %1904
  %1906 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1805, <2 x double> %1879, <2 x double> %1878)
  %1907 = fmul <2 x double> %1905, %1906
  %1908 = getelementptr inbounds nuw i8, ptr %1488, i64 2248
  %1909 = fmul <2 x double> %1773, %1900
  %1910 = fdiv <2 x double> %1902, %1871
  br label %1911

1911:                                             ; preds = %1897, %1995
  %1912 = phi <2 x double> [ %1898, %1897 ], [ %1999, %1995 ]
  %1913 = phi <2 x double> [ zeroinitializer, %1897 ], [ %1996, %1995 ]
  %1914 = phi <2 x double> [ zeroinitializer, %1897 ], [ %1997, %1995 ]
  %1915 = phi <2 x double> [ zeroinitializer, %1897 ], [ %1998, %1995 ]
  %1916 = phi <2 x double> [ zeroinitializer, %1897 ], [ %2025, %1995 ]
  %1917 = phi <2 x double> [ zeroinitializer, %1897 ], [ %2027, %1995 ]
  %1918 = phi <2 x double> [ %1873, %1897 ], [ %2000, %1995 ]
  %1919 = phi i64 [ 0, %1897 ], [ %1921, %1995 ]
  %1920 = phi <2 x double> [ zeroinitializer, %1897 ], [ %2001, %1995 ]
  %1921 = add nuw nsw i64 %1919, 1
  %1922 = icmp slt i64 %1921, %1876
  br i1 %1922, label %1923, label %1992

1923:                                             ; preds = %1911
  %1924 = getelementptr inbounds nuw <2 x double>, ptr %1814, i64 %1921
  %1925 = load <2 x double>, ptr %1924, align 16, !tbaa !26
  %1926 = icmp slt i64 %1921, %1769
  br i1 %1926, label %1934, label %1927

1927:                                             ; preds = %1923
  %1928 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1925, <2 x double> %1845, <2 x double> %1843)
  %1929 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1925, <2 x double> %1928, <2 x double> %1841)
  %1930 = fneg <2 x double> %1925
  %1931 = fmul <2 x double> %1925, %1930
  %1932 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1925, <2 x double> %1879, <2 x double> %1878)
  %1933 = fmul <2 x double> %1931, %1932
  br label %1934

1934:                                             ; preds = %1923, %1927
  %1935 = phi <2 x double> [ %1929, %1927 ], [ %1873, %1923 ]
  %1936 = phi <2 x double> [ %1933, %1927 ], [ zeroinitializer, %1923 ]
  %1937 = load i64, ptr %1768, align 16, !tbaa !31
  %1938 = icmp eq i64 %1937, 0
  %1939 = load ptr, ptr %1908, align 8, !tbaa !36
  br i1 %1938, label %1940, label %1944

1940:                                             ; preds = %1934
  %1941 = getelementptr inbounds nuw <2 x double>, ptr %1939, i64 %1921
  %1942 = load <2 x double>, ptr %1941, align 16, !tbaa !26
  %1943 = fmul <2 x double> %1774, %1942
  br label %1960

1944:                                             ; preds = %1934
  %1945 = shl nsw i64 %1921, 6
  %1946 = getelementptr inbounds nuw i8, ptr %1939, i64 %1945
  %1947 = load <2 x double>, ptr %1946, align 16, !tbaa !26
  %1948 = getelementptr inbounds nuw i8, ptr %1946, i64 16
  %1949 = load <2 x double>, ptr %1948, align 16, !tbaa !26
  %1950 = getelementptr inbounds nuw i8, ptr %1946, i64 32
  %1951 = load <2 x double>, ptr %1950, align 16, !tbaa !26
  %1952 = getelementptr inbounds nuw i8, ptr %1946, i64 48
  %1953 = load <2 x double>, ptr %1952, align 16, !tbaa !26
  %1954 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1953, <2 x double> %1951)
  %1955 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1954, <2 x double> %1949)
  %1956 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1955, <2 x double> %1947)
  %1957 = icmp slt i64 %1919, %1937
  %1958 = fmul <2 x double> %1774, %1956
  %1959 = select i1 %1957, <2 x double> %1956, <2 x double> %1958
  br label %1960

1960:                                             ; preds = %1944, %1940
  %1961 = phi <2 x double> [ %1943, %1940 ], [ %1959, %1944 ]
  %1962 = icmp slt i64 %1919, %1937
  br i1 %1962, label %1969, label %1963

1963:                                             ; preds = %1960
  %1964 = fadd <2 x double> %1912, %1925
  %1965 = fmul <2 x double> %1964, splat (double 5.000000e-01)
  %1966 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1965, <2 x double> %1826, <2 x double> %1824)
  %1967 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1965, <2 x double> %1966, <2 x double> %1822)
  %1968 = fmul <2 x double> %1967, %1961
  br label %1979

1969:                                             ; preds = %1960
  %1970 = icmp slt i64 %1921, %1937
  br i1 %1970, label %1971, label %1973

1971:                                             ; preds = %1969
  %1972 = fmul <2 x double> %1871, %1961
  br label %1979

1973:                                             ; preds = %1969
  %1974 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1925, <2 x double> %1826, <2 x double> %1824)
  %1975 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1925, <2 x double> %1974, <2 x double> %1822)
  %1976 = fdiv <2 x double> %1909, %1975
  %1977 = fadd <2 x double> %1910, %1976
  %1978 = fdiv <2 x double> %1961, %1977
  br label %1979

1979:                                             ; preds = %1963, %1971, %1973
  %1980 = phi <2 x double> [ %1968, %1963 ], [ %1972, %1971 ], [ %1978, %1973 ]
  br i1 %1926, label %1985, label %1981

1981:                                             ; preds = %1979
  %1982 = getelementptr inbounds nuw <2 x double>, ptr %1881, i64 %1921
  %1983 = load <2 x double>, ptr %1982, align 16, !tbaa !26
  %1984 = fmul <2 x double> %1754, %1983
  br label %1985

1985:                                             ; preds = %1979, %1981
  %1986 = phi <2 x double> [ %1984, %1981 ], [ zeroinitializer, %1979 ]
  %1987 = fneg <2 x double> %1986
  %1988 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1987, <2 x double> %1918, <2 x double> %1980)
  %1989 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1986, <2 x double> %1935, <2 x double> %1980)
  %1990 = fadd <2 x double> %1920, %1936
  %1991 = fmul <2 x double> %1990, %1986
  br label %1995

1992:                                             ; preds = %1911
  %1993 = load <2 x double>, ptr %1838, align 16, !tbaa !26
  %1994 = load <2 x double>, ptr %1849, align 16, !tbaa !26
  br label %1995

1995:                                             ; preds = %1992, %1985
  %1996 = phi <2 x double> [ %1988, %1985 ], [ %1993, %1992 ]
  %1997 = phi <2 x double> [ %1989, %1985 ], [ %1994, %1992 ]
  %1998 = phi <2 x double> [ %1991, %1985 ], [ %1907, %1992 ]
  %1999 = phi <2 x double> [ %1925, %1985 ], [ %1912, %1992 ]
  %2000 = phi <2 x double> [ %1935, %1985 ], [ %1918, %1992 ]
  %2001 = phi <2 x double> [ %1936, %1985 ], [ %1920, %1992 ]
  %2002 = getelementptr inbounds nuw <2 x double>, ptr %1883, i64 %1919
  %2003 = load <2 x double>, ptr %2002, align 16, !tbaa !26
  %2004 = icmp slt i64 %1919, %1769
  %2005 = select i1 %2004, <2 x double> %1875, <2 x double> %1877
  %2006 = fmul <2 x double> %1674, %2005
  %2007 = fmul <2 x double> %2006, %2003
  %2008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2007, <2 x double> %1918, <2 x double> %1996)
  %2009 = fadd <2 x double> %1914, %2008
  %2010 = fsub <2 x double> %1998, %1915
  %2011 = fneg <2 x double> %2007
  %2012 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2011, <2 x double> %1920, <2 x double> %2010)
  %2013 = getelementptr inbounds nuw <2 x double>, ptr %1885, i64 %1919
  %2014 = load <2 x double>, ptr %2013, align 16, !tbaa !26
  %2015 = fsub <2 x double> %2012, %2014
  %2016 = fneg <2 x double> %1913
  %2017 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2016, <2 x double> %1917, <2 x double> %2009)
  %2018 = fdiv <2 x double> splat (double 1.000000e+00), %2017
  %2019 = getelementptr inbounds nuw <2 x double>, ptr %1887, i64 %1919
  store <2 x double> %2015, ptr %2019, align 16, !tbaa !26
  %2020 = getelementptr inbounds nuw <2 x double>, ptr %1889, i64 %1919
  store <2 x double> %1913, ptr %2020, align 16, !tbaa !26
  %2021 = fadd <2 x double> %1913, %1997
  %2022 = fsub <2 x double> %2021, %2009
  %2023 = getelementptr inbounds nuw <2 x double>, ptr %1891, i64 %1919
  store <2 x double> %2022, ptr %2023, align 16, !tbaa !26
  %2024 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1913, <2 x double> %1916, <2 x double> %2015)
  %2025 = fmul <2 x double> %2024, %2018
  %2026 = getelementptr inbounds nuw <2 x double>, ptr %1893, i64 %1919
  store <2 x double> %2025, ptr %2026, align 16, !tbaa !26
  %2027 = fmul <2 x double> %1997, %2018
  %2028 = getelementptr inbounds nuw <2 x double>, ptr %1895, i64 %1919
  store <2 x double> %2027, ptr %2028, align 16, !tbaa !26
  %2029 = icmp eq i64 %1921, %1876
  br i1 %2029, label %2142, label %1911, !llvm.loop !86

2030:                                             ; preds = %1800
  %2031 = getelementptr inbounds nuw i8, ptr %1488, i64 384
  %2032 = load <2 x double>, ptr %2031, align 16, !tbaa !26
  %2033 = load i64, ptr %132, align 16, !tbaa !21
  %2034 = fsub <2 x double> %1745, %2032
  %2035 = fmul <2 x double> %1674, %2034
  %2036 = fmul <2 x double> %1843, splat (double 5.000000e-01)
  %2037 = fmul <2 x double> %1845, splat (double 0x3FE5555555555555)
  %2038 = getelementptr inbounds nuw i8, ptr %1488, i64 2224
  %2039 = load ptr, ptr %2038, align 16, !tbaa !73
  %2040 = getelementptr inbounds nuw i8, ptr %1488, i64 2232
  %2041 = load ptr, ptr %2040, align 8, !tbaa !49
  %2042 = getelementptr inbounds nuw i8, ptr %1488, i64 2160
  %2043 = load ptr, ptr %2042, align 16, !tbaa !59
  %2044 = getelementptr inbounds nuw i8, ptr %1488, i64 2200
  %2045 = load ptr, ptr %2044, align 8, !tbaa !81
  %2046 = getelementptr inbounds nuw i8, ptr %1488, i64 2208
  %2047 = load ptr, ptr %2046, align 16, !tbaa !82
  %2048 = getelementptr inbounds nuw i8, ptr %1488, i64 2216
  %2049 = load ptr, ptr %2048, align 8, !tbaa !83
  %2050 = getelementptr inbounds nuw i8, ptr %1488, i64 2184
  %2051 = load ptr, ptr %2050, align 8, !tbaa !84
  %2052 = getelementptr inbounds nuw i8, ptr %1488, i64 2192
  %2053 = load ptr, ptr %2052, align 16, !tbaa !85
  %2054 = icmp sgt i64 %2033, 0
  br i1 %2054, label %2055, label %2142

2055:                                             ; preds = %2030
  %2056 = load <2 x double>, ptr %1814, align 16, !tbaa !26
  %2057 = fneg <2 x double> %2056
  %2058 = fmul <2 x double> %2056, %2057
  %2059 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2056, <2 x double> %2037, <2 x double> %2036)
  %2060 = fmul <2 x double> %2058, %2059
  %2061 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2056, <2 x double> %1845, <2 x double> %1843)
  %2062 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2056, <2 x double> %2061, <2 x double> %1841)
  %2063 = fmul <2 x double> %1754, splat (double -2.000000e+00)
  %2064 = fmul <2 x double> %2063, %1805
  %2065 = fmul <2 x double> %1805, %2064
  %2066 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1805, <2 x double> %2037, <2 x double> %2036)
  %2067 = fmul <2 x double> %2065, %2066
  %2068 = getelementptr inbounds nuw i8, ptr %1488, i64 2248
  br label %2069

2069:                                             ; preds = %2055, %2110
  %2070 = phi <2 x double> [ %2056, %2055 ], [ %2114, %2110 ]
  %2071 = phi <2 x double> [ zeroinitializer, %2055 ], [ %2111, %2110 ]
  %2072 = phi <2 x double> [ zeroinitializer, %2055 ], [ %2112, %2110 ]
  %2073 = phi <2 x double> [ zeroinitializer, %2055 ], [ %2113, %2110 ]
  %2074 = phi <2 x double> [ zeroinitializer, %2055 ], [ %2137, %2110 ]
  %2075 = phi <2 x double> [ zeroinitializer, %2055 ], [ %2139, %2110 ]
  %2076 = phi <2 x double> [ %2062, %2055 ], [ %2115, %2110 ]
  %2077 = phi i64 [ 0, %2055 ], [ %2079, %2110 ]
  %2078 = phi <2 x double> [ %2060, %2055 ], [ %2116, %2110 ]
  %2079 = add nuw nsw i64 %2077, 1
  %2080 = icmp slt i64 %2079, %2033
  br i1 %2080, label %2081, label %2107

2081:                                             ; preds = %2069
  %2082 = getelementptr inbounds nuw <2 x double>, ptr %1814, i64 %2079
  %2083 = load <2 x double>, ptr %2082, align 16, !tbaa !26
  %2084 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2083, <2 x double> %1845, <2 x double> %1843)
  %2085 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2083, <2 x double> %2084, <2 x double> %1841)
  %2086 = fneg <2 x double> %2083
  %2087 = fmul <2 x double> %2083, %2086
  %2088 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2083, <2 x double> %2037, <2 x double> %2036)
  %2089 = fmul <2 x double> %2087, %2088
  %2090 = fadd <2 x double> %2070, %2083
  %2091 = fmul <2 x double> %2090, splat (double 5.000000e-01)
  %2092 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2091, <2 x double> %1826, <2 x double> %1824)
  %2093 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2091, <2 x double> %2092, <2 x double> %1822)
  %2094 = load ptr, ptr %2068, align 8, !tbaa !36
  %2095 = getelementptr inbounds nuw <2 x double>, ptr %2094, i64 %2079
  %2096 = load <2 x double>, ptr %2095, align 16, !tbaa !26
  %2097 = fmul <2 x double> %1775, %2096
  %2098 = fmul <2 x double> %2097, %2093
  %2099 = getelementptr inbounds nuw <2 x double>, ptr %2039, i64 %2079
  %2100 = load <2 x double>, ptr %2099, align 16, !tbaa !26
  %2101 = fmul <2 x double> %1754, %2100
  %2102 = fneg <2 x double> %2101
  %2103 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2102, <2 x double> %2076, <2 x double> %2098)
  %2104 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2101, <2 x double> %2085, <2 x double> %2098)
  %2105 = fadd <2 x double> %2078, %2089
  %2106 = fmul <2 x double> %2105, %2101
  br label %2110

2107:                                             ; preds = %2069
  %2108 = load <2 x double>, ptr %1838, align 16, !tbaa !26
  %2109 = load <2 x double>, ptr %1849, align 16, !tbaa !26
  br label %2110

2110:                                             ; preds = %2107, %2081
  %2111 = phi <2 x double> [ %2103, %2081 ], [ %2108, %2107 ]
  %2112 = phi <2 x double> [ %2104, %2081 ], [ %2109, %2107 ]
  %2113 = phi <2 x double> [ %2106, %2081 ], [ %2067, %2107 ]
  %2114 = phi <2 x double> [ %2083, %2081 ], [ %2070, %2107 ]
  %2115 = phi <2 x double> [ %2085, %2081 ], [ %2076, %2107 ]
  %2116 = phi <2 x double> [ %2089, %2081 ], [ %2078, %2107 ]
  %2117 = getelementptr inbounds nuw <2 x double>, ptr %2041, i64 %2077
  %2118 = load <2 x double>, ptr %2117, align 16, !tbaa !26
  %2119 = fmul <2 x double> %2035, %2118
  %2120 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2119, <2 x double> %2076, <2 x double> %2111)
  %2121 = fadd <2 x double> %2072, %2120
  %2122 = fsub <2 x double> %2113, %2073
  %2123 = fneg <2 x double> %2119
  %2124 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2123, <2 x double> %2078, <2 x double> %2122)
  %2125 = getelementptr inbounds nuw <2 x double>, ptr %2043, i64 %2077
  %2126 = load <2 x double>, ptr %2125, align 16, !tbaa !26
  %2127 = fsub <2 x double> %2124, %2126
  %2128 = fneg <2 x double> %2071
  %2129 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2128, <2 x double> %2075, <2 x double> %2121)
  %2130 = fdiv <2 x double> splat (double 1.000000e+00), %2129
  %2131 = getelementptr inbounds nuw <2 x double>, ptr %2045, i64 %2077
  store <2 x double> %2127, ptr %2131, align 16, !tbaa !26
  %2132 = getelementptr inbounds nuw <2 x double>, ptr %2047, i64 %2077
  store <2 x double> %2071, ptr %2132, align 16, !tbaa !26
  %2133 = fadd <2 x double> %2071, %2112
  %2134 = fsub <2 x double> %2133, %2121
  %2135 = getelementptr inbounds nuw <2 x double>, ptr %2049, i64 %2077
  store <2 x double> %2134, ptr %2135, align 16, !tbaa !26
  %2136 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2071, <2 x double> %2074, <2 x double> %2127)
  %2137 = fmul <2 x double> %2136, %2130
  %2138 = getelementptr inbounds nuw <2 x double>, ptr %2051, i64 %2077
  store <2 x double> %2137, ptr %2138, align 16, !tbaa !26
  %2139 = fmul <2 x double> %2112, %2130
  %2140 = getelementptr inbounds nuw <2 x double>, ptr %2053, i64 %2077
  store <2 x double> %2139, ptr %2140, align 16, !tbaa !26
  %2141 = icmp eq i64 %2079, %2033
  br i1 %2141, label %2142, label %2069, !llvm.loop !87

2142:                                             ; preds = %1995, %2110, %1869, %2030
  %2143 = getelementptr inbounds nuw i8, ptr %1488, i64 2032
  store <2 x double> splat (double 1.000000e+09), ptr %2143, align 16, !tbaa !26
  %2144 = getelementptr inbounds nuw i8, ptr %1488, i64 2184
  %2145 = load ptr, ptr %2144, align 8, !tbaa !84
  %2146 = load i64, ptr %132, align 16, !tbaa !21
  %2147 = add nsw i64 %2146, -1
  %2148 = getelementptr inbounds <2 x double>, ptr %2145, i64 %2147
  %2149 = load <2 x double>, ptr %2148, align 16, !tbaa !26
  %2150 = getelementptr inbounds nuw i8, ptr %1488, i64 2192
  %2151 = load ptr, ptr %2150, align 16, !tbaa !85
  %2152 = getelementptr inbounds <2 x double>, ptr %2151, i64 %2147
  %2153 = load <2 x double>, ptr %2152, align 16, !tbaa !26
  %2154 = load <2 x double>, ptr %1838, align 16, !tbaa !26
  %2155 = fmul <2 x double> %2149, %2154
  %2156 = fsub <2 x double> splat (double 1.000000e+00), %2153
  %2157 = fmul <2 x double> %2154, %2156
  %2158 = load <2 x double>, ptr %1863, align 16, !tbaa !26
  %2159 = load <2 x double>, ptr %1685, align 16, !tbaa !26
  %2160 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2158, <2 x double> %2159, <2 x double> %2155)
  %2161 = load <2 x double>, ptr %1721, align 16, !tbaa !26
  %2162 = fsub <2 x double> %2160, %2161
  %2163 = fadd <2 x double> %2157, %2158
  %2164 = load <2 x double>, ptr %1718, align 16, !tbaa !26
  %2165 = fadd <2 x double> %2163, %2164
  %2166 = load <2 x i64>, ptr %1704, align 16, !tbaa !26
  %2167 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2166)
  %2168 = icmp eq i64 %2167, 0
  %2169 = load i64, ptr %133, align 8, !tbaa !22
  br i1 %2168, label %2170, label %2185

2170:                                             ; preds = %2142
  %2171 = icmp slt i64 %2169, 0
  br i1 %2171, label %2176, label %2172

2172:                                             ; preds = %2170
  %2173 = getelementptr inbounds nuw i8, ptr %1488, i64 352
  %2174 = getelementptr inbounds nuw i8, ptr %1488, i64 2304
  %2175 = load <2 x double>, ptr %2173, align 16, !tbaa !26
  br label %2178

2176:                                             ; preds = %2178, %2170
  %2177 = getelementptr inbounds nuw i8, ptr %1488, i64 1552
  store <2 x double> %2162, ptr %2177, align 16, !tbaa !26
  br label %2312

2178:                                             ; preds = %2172, %2178
  %2179 = phi i64 [ 0, %2172 ], [ %2182, %2178 ]
  %2180 = load ptr, ptr %2174, align 16, !tbaa !88
  %2181 = getelementptr inbounds nuw <2 x double>, ptr %2180, i64 %2179
  store <2 x double> %2175, ptr %2181, align 16, !tbaa !26
  %2182 = add nuw nsw i64 %2179, 1
  %2183 = load i64, ptr %133, align 8, !tbaa !22
  %2184 = icmp slt i64 %2179, %2183
  br i1 %2184, label %2178, label %2176, !llvm.loop !89

2185:                                             ; preds = %2142
  %2186 = load <2 x double>, ptr %1708, align 16, !tbaa !26
  %2187 = load <2 x double>, ptr %1734, align 16, !tbaa !26
  %2188 = getelementptr inbounds nuw i8, ptr %1488, i64 320
  %2189 = load <2 x double>, ptr %2188, align 16, !tbaa !26
  %2190 = fmul <2 x double> %2187, %2189
  %2191 = load <2 x double>, ptr %1488, align 16, !tbaa !26
  %2192 = fsub <2 x double> %2191, %2186
  %2193 = sitofp i64 %2169 to double
  %2194 = insertelement <2 x double> poison, double %2193, i64 0
  %2195 = shufflevector <2 x double> %2194, <2 x double> poison, <2 x i32> zeroinitializer
  %2196 = fdiv <2 x double> %2192, %2195
  %2197 = load <2 x double>, ptr %1866, align 16, !tbaa !26
  %2198 = load <2 x double>, ptr %1868, align 16, !tbaa !26
  %2199 = getelementptr inbounds nuw i8, ptr %1488, i64 352
  %2200 = load <2 x double>, ptr %2199, align 16, !tbaa !26
  %2201 = getelementptr inbounds nuw i8, ptr %1488, i64 2304
  %2202 = load ptr, ptr %2201, align 16, !tbaa !88
  %2203 = getelementptr inbounds <2 x double>, ptr %2202, i64 %2169
  store <2 x double> %2200, ptr %2203, align 16, !tbaa !26
  %2204 = icmp sgt i64 %2169, 0
  br i1 %2204, label %2205, label %2296

2205:                                             ; preds = %2185
  %2206 = fneg <2 x double> %2190
  %2207 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2206, <2 x double> %2198, <2 x double> %2197)
  %2208 = fsub <2 x double> splat (double 1.000000e+00), %2198
  %2209 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2190, <2 x double> %2208, <2 x double> %2197)
  %2210 = getelementptr inbounds nuw i8, ptr %1488, i64 2312
  %2211 = getelementptr inbounds nuw i8, ptr %1488, i64 2320
  %2212 = getelementptr inbounds nuw i8, ptr %1488, i64 192
  %2213 = fmul <2 x double> %2190, splat (double -5.000000e-01)
  %2214 = getelementptr inbounds nuw i8, ptr %1488, i64 2280
  %2215 = getelementptr inbounds nuw i8, ptr %1488, i64 2288
  %2216 = getelementptr inbounds nuw i8, ptr %1488, i64 2296
  br label %2217

2217:                                             ; preds = %2205, %2271
  %2218 = phi <2 x double> [ %2209, %2205 ], [ %2273, %2271 ]
  %2219 = phi <2 x double> [ %2207, %2205 ], [ %2274, %2271 ]
  %2220 = phi <2 x double> [ %2159, %2205 ], [ %2289, %2271 ]
  %2221 = phi <2 x double> [ zeroinitializer, %2205 ], [ %2292, %2271 ]
  %2222 = phi <2 x double> [ %2200, %2205 ], [ %2235, %2271 ]
  %2223 = phi i64 [ %2169, %2205 ], [ %2224, %2271 ]
  %2224 = add nsw i64 %2223, -1
  %2225 = uitofp nneg i64 %2224 to double
  %2226 = insertelement <2 x double> poison, double %2225, i64 0
  %2227 = shufflevector <2 x double> %2226, <2 x double> poison, <2 x i32> zeroinitializer
  %2228 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2227, <2 x double> %2196, <2 x double> %2186)
  %2229 = load <2 x double>, ptr %1735, align 16, !tbaa !26
  %2230 = load <2 x double>, ptr %1737, align 16, !tbaa !26
  %2231 = load <2 x double>, ptr %1739, align 16, !tbaa !26
  %2232 = load <2 x double>, ptr %1741, align 16, !tbaa !26
  %2233 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2228, <2 x double> %2232, <2 x double> %2231)
  %2234 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2228, <2 x double> %2233, <2 x double> %2230)
  %2235 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2228, <2 x double> %2234, <2 x double> %2229)
  %2236 = load <2 x double>, ptr %1713, align 16, !tbaa !26
  %2237 = load <2 x double>, ptr %1696, align 16, !tbaa !26
  %2238 = load ptr, ptr %2210, align 8, !tbaa !50
  %2239 = getelementptr inbounds nuw <2 x double>, ptr %2238, i64 %2224
  %2240 = load <2 x double>, ptr %2239, align 16, !tbaa !26
  %2241 = fmul <2 x double> %2237, %2240
  %2242 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2236, <2 x double> %2235, <2 x double> %2241)
  %2243 = load <2 x double>, ptr %1699, align 16, !tbaa !26
  %2244 = load ptr, ptr %2211, align 16, !tbaa !60
  %2245 = getelementptr inbounds nuw <2 x double>, ptr %2244, i64 %2224
  %2246 = load <2 x double>, ptr %2245, align 16, !tbaa !26
  %2247 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2243, <2 x double> %2246, <2 x double> %2242)
  %2248 = fmul <2 x double> %2247, splat (double 5.000000e-01)
  %2249 = icmp eq i64 %2223, 1
  br i1 %2249, label %2265, label %2250

2250:                                             ; preds = %2217
  %2251 = load <2 x double>, ptr %2212, align 16, !tbaa !26
  %2252 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2248, <2 x double> %2251, <2 x double> %2213)
  %2253 = load <2 x double>, ptr %1812, align 16, !tbaa !26
  %2254 = fmul <2 x double> %2195, %2253
  %2255 = load <2 x double>, ptr %1756, align 16, !tbaa !26
  %2256 = load <2 x double>, ptr %1758, align 16, !tbaa !26
  %2257 = load <2 x double>, ptr %1760, align 16, !tbaa !26
  %2258 = load <2 x double>, ptr %1762, align 16, !tbaa !26
  %2259 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2228, <2 x double> %2258, <2 x double> %2257)
  %2260 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2228, <2 x double> %2259, <2 x double> %2256)
  %2261 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2228, <2 x double> %2260, <2 x double> %2255)
  %2262 = fmul <2 x double> %2254, %2261
  %2263 = fsub <2 x double> %2262, %2252
  %2264 = fadd <2 x double> %2252, %2262
  br label %2271

2265:                                             ; preds = %2217
  %2266 = load <2 x double>, ptr %1863, align 16, !tbaa !26
  %2267 = load <2 x double>, ptr %2212, align 16, !tbaa !26
  %2268 = fmul <2 x double> %2248, splat (double -2.000000e+00)
  %2269 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2268, <2 x double> %2267, <2 x double> %2266)
  %2270 = fadd <2 x double> %2190, %2269
  br label %2271

2271:                                             ; preds = %2265, %2250
  %2272 = phi <2 x double> [ %2251, %2250 ], [ %2267, %2265 ]
  %2273 = phi <2 x double> [ %2263, %2250 ], [ %2270, %2265 ]
  %2274 = phi <2 x double> [ %2264, %2250 ], [ %2266, %2265 ]
  %2275 = fsub <2 x double> %2222, %2235
  %2276 = fmul <2 x double> %2236, %2275
  %2277 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2276, <2 x double> %2272, <2 x double> %2218)
  %2278 = fadd <2 x double> %2274, %2277
  %2279 = fneg <2 x double> %2219
  %2280 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2279, <2 x double> %2221, <2 x double> %2278)
  %2281 = fdiv <2 x double> splat (double 1.000000e+00), %2280
  %2282 = load ptr, ptr %2201, align 16, !tbaa !88
  %2283 = getelementptr inbounds nuw <2 x double>, ptr %2282, i64 %2224
  store <2 x double> %2235, ptr %2283, align 16, !tbaa !26
  %2284 = load ptr, ptr %2214, align 8, !tbaa !63
  %2285 = getelementptr inbounds nuw <2 x double>, ptr %2284, i64 %2224
  %2286 = load <2 x double>, ptr %2285, align 16, !tbaa !26
  %2287 = fneg <2 x double> %2286
  %2288 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2219, <2 x double> %2220, <2 x double> %2287)
  %2289 = fmul <2 x double> %2281, %2288
  %2290 = load ptr, ptr %2215, align 16, !tbaa !90
  %2291 = getelementptr inbounds nuw <2 x double>, ptr %2290, i64 %2224
  store <2 x double> %2289, ptr %2291, align 16, !tbaa !26
  %2292 = fmul <2 x double> %2273, %2281
  %2293 = load ptr, ptr %2216, align 8, !tbaa !91
  %2294 = getelementptr inbounds nuw <2 x double>, ptr %2293, i64 %2224
  store <2 x double> %2292, ptr %2294, align 16, !tbaa !26
  %2295 = icmp samesign ugt i64 %2223, 1
  br i1 %2295, label %2217, label %2296, !llvm.loop !92

2296:                                             ; preds = %2271, %2185
  %2297 = load <2 x i64>, ptr %1704, align 16, !tbaa !26
  %2298 = load <2 x double>, ptr %1863, align 16, !tbaa !26
  %2299 = getelementptr inbounds nuw i8, ptr %1488, i64 2288
  %2300 = load ptr, ptr %2299, align 16, !tbaa !90
  %2301 = load <2 x double>, ptr %2300, align 16, !tbaa !26
  %2302 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2298, <2 x double> %2301, <2 x double> %2155)
  %2303 = icmp eq <2 x i64> %2297, zeroinitializer
  %2304 = select <2 x i1> %2303, <2 x double> %2162, <2 x double> %2302
  %2305 = getelementptr inbounds nuw i8, ptr %1488, i64 1552
  store <2 x double> %2304, ptr %2305, align 16, !tbaa !26
  %2306 = getelementptr inbounds nuw i8, ptr %1488, i64 2296
  %2307 = load ptr, ptr %2306, align 8, !tbaa !91
  %2308 = load <2 x double>, ptr %2307, align 16, !tbaa !26
  %2309 = fsub <2 x double> splat (double 1.000000e+00), %2308
  %2310 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2298, <2 x double> %2309, <2 x double> %2157)
  %2311 = select <2 x i1> %2303, <2 x double> %2165, <2 x double> %2310
  br label %2312

2312:                                             ; preds = %2176, %2296
  %2313 = phi <2 x double> [ %2165, %2176 ], [ %2311, %2296 ]
  %2314 = getelementptr inbounds nuw i8, ptr %1488, i64 1568
  store <2 x double> %2313, ptr %2314, align 16, !tbaa !26
  %2315 = add nuw nsw i64 %1486, 1
  %2316 = load i64, ptr %169, align 8, !tbaa !20
  %2317 = icmp slt i64 %2315, %2316
  br i1 %2317, label %1485, label %1482, !llvm.loop !93

2318:                                             ; preds = %2418, %1473, %1482
  %2319 = phi <2 x double> [ %1474, %1473 ], [ %1483, %1482 ], [ %1483, %2418 ]
  %2320 = fcmp ogt <2 x double> %2319, zeroinitializer
  %2321 = bitcast <2 x i1> %2320 to i2
  %2322 = icmp eq i2 %2321, 0
  br i1 %2322, label %2425, label %2422

2323:                                             ; preds = %1482, %2418
  %2324 = phi i64 [ %2419, %2418 ], [ %2316, %1482 ]
  %2325 = phi i64 [ %2420, %2418 ], [ 0, %1482 ]
  %2326 = load ptr, ptr %142, align 8, !tbaa !28
  %2327 = getelementptr inbounds nuw %struct.Piece, ptr %2326, i64 %2325
  %2328 = getelementptr inbounds nuw i8, ptr %2327, i64 2112
  %2329 = load <2 x i64>, ptr %2328, align 16, !tbaa !26
  %2330 = getelementptr inbounds nuw i8, ptr %2327, i64 560
  %2331 = load <2 x double>, ptr %2330, align 16, !tbaa !26
  %2332 = fcmp ogt <2 x double> %2331, zeroinitializer
  %2333 = select <2 x i1> %2332, <2 x i64> %2329, <2 x i64> zeroinitializer
  %2334 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2333)
  %2335 = icmp eq i64 %2334, 0
  br i1 %2335, label %2418, label %2336

2336:                                             ; preds = %2323
  %2337 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %2338 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2337, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2339 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2337, <2 x double> %2338, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2340 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %2341 = getelementptr inbounds nuw i8, ptr %2327, i64 1552
  %2342 = load <2 x double>, ptr %2341, align 16, !tbaa !26
  %2343 = getelementptr inbounds nuw i8, ptr %2327, i64 1568
  %2344 = load <2 x double>, ptr %2343, align 16, !tbaa !26
  %2345 = fdiv <2 x double> %2342, %2344
  %2346 = fcmp olt <2 x double> %2345, %2337
  %2347 = select <2 x i1> %2346, <2 x double> %2345, <2 x double> %2337
  %2348 = getelementptr inbounds nuw i8, ptr %2327, i64 896
  %2349 = load <2 x double>, ptr %2348, align 16, !tbaa !26
  %2350 = fcmp olt <2 x double> %2349, %2347
  %2351 = select <2 x i1> %2350, <2 x double> %2349, <2 x double> %2347
  %2352 = fneg <2 x double> %2344
  %2353 = getelementptr inbounds nuw i8, ptr %2327, i64 1872
  %2354 = load <2 x double>, ptr %2353, align 16, !tbaa !26
  br label %2358

2355:                                             ; preds = %2358
  %2356 = getelementptr inbounds nuw i8, ptr %2327, i64 1584
  store <2 x double> %2409, ptr %2356, align 16, !tbaa !26
  %2357 = load i64, ptr %169, align 8, !tbaa !20
  br label %2418

2358:                                             ; preds = %2336, %2358
  %2359 = phi <2 x i64> [ %2333, %2336 ], [ %2412, %2358 ]
  %2360 = phi i32 [ 0, %2336 ], [ %2413, %2358 ]
  %2361 = phi <2 x double> [ %2351, %2336 ], [ %2409, %2358 ]
  %2362 = fadd <2 x double> %2361, splat (double 2.731500e+02)
  %2363 = fcmp ogt <2 x double> %2361, zeroinitializer
  %2364 = select <2 x i1> %2363, <2 x double> %2361, <2 x double> zeroinitializer
  %2365 = fadd <2 x double> %2364, splat (double 2.731500e+02)
  %2366 = fadd <2 x double> %2365, splat (double 0xC08451671D164BD4)
  %2367 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %2366
  %2368 = fsub <2 x double> %2365, %2367
  %2369 = fadd <2 x double> %2368, splat (double 0x40923C3565924845)
  %2370 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2368, <2 x double> %2369, <2 x double> splat (double 0xC12619EA558539E6))
  %2371 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2368, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %2372 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2368, <2 x double> %2371, <2 x double> splat (double 0xC148A99584203885))
  %2373 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2368, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %2374 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2368, <2 x double> %2373, <2 x double> splat (double 0x4118B9E59F2691E5))
  %2375 = fmul <2 x double> %2374, splat (double 2.000000e+00)
  %2376 = fmul <2 x double> %2370, splat (double 4.000000e+00)
  %2377 = fneg <2 x double> %2374
  %2378 = fmul <2 x double> %2376, %2377
  %2379 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2372, <2 x double> %2372, <2 x double> %2378)
  %2380 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2379)
  %2381 = fsub <2 x double> %2380, %2372
  %2382 = fdiv <2 x double> %2375, %2381
  %2383 = fmul <2 x double> %2382, %2382
  %2384 = fmul <2 x double> %2383, splat (double 1.000000e+06)
  %2385 = fmul <2 x double> %2383, %2384
  %2386 = fmul <2 x double> %2362, splat (double 4.615260e+02)
  %2387 = fdiv <2 x double> %2385, %2386
  %2388 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2352, <2 x double> %2361, <2 x double> %2342)
  %2389 = fsub <2 x double> %2387, %2340
  %2390 = fcmp ogt <2 x double> %2389, zeroinitializer
  %2391 = select <2 x i1> %2390, <2 x double> %2389, <2 x double> zeroinitializer
  %2392 = fmul <2 x double> %2339, %2391
  %2393 = fdiv <2 x double> %2392, %2354
  %2394 = fsub <2 x double> %2388, %2393
  %2395 = fmul <2 x double> %2339, %2387
  %2396 = fdiv <2 x double> %2339, %2386
  %2397 = fadd <2 x double> %2396, splat (double -1.000000e+00)
  %2398 = fmul <2 x double> %2397, %2395
  %2399 = fdiv <2 x double> %2398, %2362
  %2400 = fdiv <2 x double> %2399, %2354
  %2401 = fcmp ule <2 x double> %2387, %2340
  %2402 = select <2 x i1> %2401, <2 x double> zeroinitializer, <2 x double> %2400
  %2403 = fsub <2 x double> %2352, %2402
  %2404 = fdiv <2 x double> %2394, %2403
  %2405 = fsub <2 x double> %2361, %2404
  %2406 = fcmp olt <2 x double> %2405, %2347
  %2407 = select <2 x i1> %2406, <2 x double> %2405, <2 x double> %2347
  %2408 = icmp eq <2 x i64> %2359, zeroinitializer
  %2409 = select <2 x i1> %2408, <2 x double> %2361, <2 x double> %2407
  %2410 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2404)
  %2411 = fcmp oge <2 x double> %2410, splat (double 1.000000e-05)
  %2412 = select <2 x i1> %2411, <2 x i64> %2359, <2 x i64> zeroinitializer
  %2413 = add nuw nsw i32 %2360, 1
  %2414 = icmp samesign ult i32 %2360, 7
  %2415 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2412)
  %2416 = icmp ne i64 %2415, 0
  %2417 = select i1 %2414, i1 %2416, i1 false
  br i1 %2417, label %2358, label %2355, !llvm.loop !94

2418:                                             ; preds = %2323, %2355
  %2419 = phi i64 [ %2324, %2323 ], [ %2357, %2355 ]
  %2420 = add nuw nsw i64 %2325, 1
  %2421 = icmp slt i64 %2420, %2419
  br i1 %2421, label %2323, label %2318, !llvm.loop !95

2422:                                             ; preds = %2318
  %2423 = sext <2 x i1> %2320 to <2 x i64>
  %2424 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, <2 x i64> noundef %2423) #7
  br label %2425

2425:                                             ; preds = %2318, %2422
  %2426 = phi <2 x double> [ %2424, %2422 ], [ zeroinitializer, %2318 ]
  %2427 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %2428 = fcmp ogt <2 x double> %2427, zeroinitializer
  %2429 = sext <2 x i1> %2428 to <2 x i64>
  %2430 = xor <2 x i64> %2429, splat (i64 -1)
  %2431 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %2432 = fcmp oeq <2 x double> %2431, splat (double 1.000000e+00)
  %2433 = fcmp oeq <2 x double> %2431, splat (double 2.000000e+00)
  %2434 = or <2 x i1> %2432, %2433
  %2435 = select <2 x i1> %2434, <2 x i64> %2430, <2 x i64> zeroinitializer
  %2436 = xor <2 x i64> %2435, %2429
  %2437 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %2438 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %2439 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %2440 = icmp eq <2 x i64> %2436, splat (i64 -1)
  %2441 = select <2 x i1> %2440, <2 x double> %2439, <2 x double> %2438
  %2442 = bitcast <2 x i1> %2428 to i2
  %2443 = icmp eq i2 %2442, 0
  br i1 %2443, label %2475, label %2444

2444:                                             ; preds = %2425
  %2445 = select <2 x i1> %2428, <2 x double> %2426, <2 x double> %2441
  %2446 = fmul <2 x double> %2445, splat (double 0x3EB0C6F7A0B5ED8D)
  %2447 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2446)
  %2448 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2447)
  %2449 = fmul <2 x double> %2448, %2448
  %2450 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2448, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2449)
  %2451 = fadd <2 x double> %2450, splat (double 0x402DD4891DBECC6B)
  %2452 = fmul <2 x double> %2448, splat (double 0x40C77A698FD9BCCA)
  %2453 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2449, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2452)
  %2454 = fadd <2 x double> %2453, splat (double 0xC0B2D7440748F0B3)
  %2455 = fmul <2 x double> %2448, splat (double 0xC148A99584203885)
  %2456 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2449, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2455)
  %2457 = fadd <2 x double> %2456, splat (double 0x4118B9E59F2691E5)
  %2458 = fmul <2 x double> %2457, splat (double 2.000000e+00)
  %2459 = fneg <2 x double> %2454
  %2460 = fmul <2 x double> %2451, splat (double 4.000000e+00)
  %2461 = fneg <2 x double> %2457
  %2462 = fmul <2 x double> %2460, %2461
  %2463 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2454, <2 x double> %2454, <2 x double> %2462)
  %2464 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2463)
  %2465 = fsub <2 x double> %2459, %2464
  %2466 = fdiv <2 x double> %2458, %2465
  %2467 = fadd <2 x double> %2466, splat (double 0x408451671D164BD4)
  %2468 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2466, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2469 = fmul <2 x double> %2468, splat (double -4.000000e+00)
  %2470 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2467, <2 x double> %2467, <2 x double> %2469)
  %2471 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2470)
  %2472 = fsub <2 x double> %2467, %2471
  %2473 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2472, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2474 = select <2 x i1> %2428, <2 x double> %2473, <2 x double> %2437
  br label %2475

2475:                                             ; preds = %2444, %2425
  %2476 = phi <2 x double> [ %2445, %2444 ], [ %2441, %2425 ]
  %2477 = phi <2 x double> [ %2474, %2444 ], [ %2437, %2425 ]
  %2478 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %2479 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %2480 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %2481 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %2482 = fmul <2 x double> %2480, %2481
  %2483 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2478, <2 x double> %2479, <2 x double> %2482)
  %2484 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %2485 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %2486 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %2487 = fneg <2 x double> %2483
  %2488 = fmul <2 x double> %2486, %2487
  %2489 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2484, <2 x double> %2485, <2 x double> %2488)
  %2490 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %2491 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2486, <2 x double> %2490, <2 x double> %2484)
  %2492 = fdiv <2 x double> %2489, %2491
  %2493 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2494 = select <2 x i1> %2440, <2 x double> %2493, <2 x double> %2438
  store <2 x double> %2494, ptr %194, align 16, !tbaa !26
  %2495 = load <2 x double>, ptr %195, align 16, !tbaa !26
  %2496 = select <2 x i1> %2440, <2 x double> %2495, <2 x double> %2492
  store <2 x double> %2496, ptr %195, align 16, !tbaa !26
  store <2 x double> %2476, ptr %188, align 16, !tbaa !26
  %2497 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %2498 = and <2 x i64> %2497, %2435
  %2499 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2498)
  %2500 = icmp eq i64 %2499, 0
  br i1 %2500, label %3048, label %2501

2501:                                             ; preds = %2475
  %2502 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %2503 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %2504 = fmul <2 x double> %2480, %2503
  %2505 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2478, <2 x double> %2502, <2 x double> %2504)
  %2506 = load <2 x double>, ptr %198, align 16, !tbaa !26
  %2507 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2508 = fdiv <2 x double> %2506, %2507
  %2509 = fmul <2 x double> %2438, splat (double 3.000000e-01)
  %2510 = load <2 x double>, ptr %200, align 16, !tbaa !26
  %2511 = fadd <2 x double> %2438, %2510
  %2512 = fadd <2 x double> %2511, splat (double 2.000000e+05)
  %2513 = fmul <2 x double> %2507, splat (double 2.870530e+02)
  %2514 = fdiv <2 x double> %2438, %2513
  %2515 = fcmp ogt <2 x double> %2476, %2509
  %2516 = select <2 x i1> %2515, <2 x double> %2476, <2 x double> %2509
  %2517 = fcmp olt <2 x double> %2516, %2512
  %2518 = select <2 x i1> %2517, <2 x double> %2516, <2 x double> %2512
  %2519 = icmp eq <2 x i64> %2435, zeroinitializer
  %2520 = select <2 x i1> %2519, <2 x double> %2476, <2 x double> %2518
  %2521 = fdiv <2 x double> %2494, splat (double 2.870530e+02)
  %2522 = fmul <2 x double> %2514, splat (double 2.000000e+00)
  %2523 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2522)
  br label %2524

2524:                                             ; preds = %2830, %2501
  %2525 = phi <2 x double> [ %2477, %2501 ], [ %2559, %2830 ]
  %2526 = phi <2 x double> [ %2509, %2501 ], [ %2987, %2830 ]
  %2527 = phi <2 x double> [ %2512, %2501 ], [ %2984, %2830 ]
  %2528 = phi <2 x i64> [ %2498, %2501 ], [ %3003, %2830 ]
  %2529 = phi i32 [ 0, %2501 ], [ %3008, %2830 ]
  %2530 = phi <2 x double> [ %2520, %2501 ], [ %3005, %2830 ]
  %2531 = fmul <2 x double> %2530, splat (double 0x3EB0C6F7A0B5ED8D)
  %2532 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2531)
  %2533 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2532)
  %2534 = fmul <2 x double> %2533, %2533
  %2535 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2533, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2534)
  %2536 = fadd <2 x double> %2535, splat (double 0x402DD4891DBECC6B)
  %2537 = fmul <2 x double> %2533, splat (double 0x40C77A698FD9BCCA)
  %2538 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2534, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2537)
  %2539 = fadd <2 x double> %2538, splat (double 0xC0B2D7440748F0B3)
  %2540 = fmul <2 x double> %2533, splat (double 0xC148A99584203885)
  %2541 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2534, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2540)
  %2542 = fadd <2 x double> %2541, splat (double 0x4118B9E59F2691E5)
  %2543 = fmul <2 x double> %2542, splat (double 2.000000e+00)
  %2544 = fneg <2 x double> %2539
  %2545 = fmul <2 x double> %2536, splat (double 4.000000e+00)
  %2546 = fneg <2 x double> %2542
  %2547 = fmul <2 x double> %2545, %2546
  %2548 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2539, <2 x double> %2539, <2 x double> %2547)
  %2549 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2548)
  %2550 = fsub <2 x double> %2544, %2549
  %2551 = fdiv <2 x double> %2543, %2550
  %2552 = fadd <2 x double> %2551, splat (double 0x408451671D164BD4)
  %2553 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2551, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2554 = fmul <2 x double> %2553, splat (double -4.000000e+00)
  %2555 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2552, <2 x double> %2552, <2 x double> %2554)
  %2556 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2555)
  %2557 = fsub <2 x double> %2552, %2556
  %2558 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2557, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2559 = select <2 x i1> %2519, <2 x double> %2525, <2 x double> %2558
  %2560 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2559, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2561 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2559, <2 x double> %2560, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2562 = load i64, ptr %169, align 8, !tbaa !20, !noalias !96
  %2563 = icmp sgt i64 %2562, 0
  br i1 %2563, label %2564, label %2830

2564:                                             ; preds = %2524
  %2565 = fdiv <2 x double> splat (double 1.000000e+00), %2561
  br label %2566

2566:                                             ; preds = %2564, %2747
  %2567 = phi <2 x double> [ zeroinitializer, %2564 ], [ %2826, %2747 ]
  %2568 = phi <2 x double> [ zeroinitializer, %2564 ], [ %2825, %2747 ]
  %2569 = phi i64 [ 0, %2564 ], [ %2827, %2747 ]
  %2570 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !96
  %2571 = getelementptr inbounds nuw %struct.Piece, ptr %2570, i64 %2569
  %2572 = getelementptr inbounds nuw i8, ptr %2571, i64 1552
  %2573 = load <2 x double>, ptr %2572, align 16, !tbaa !26, !noalias !96
  %2574 = getelementptr inbounds nuw i8, ptr %2571, i64 1568
  %2575 = load <2 x double>, ptr %2574, align 16, !tbaa !26, !noalias !96
  %2576 = getelementptr inbounds nuw i8, ptr %2571, i64 1920
  %2577 = load <2 x double>, ptr %2576, align 16, !tbaa !26, !noalias !96
  %2578 = fcmp ule <2 x double> %2577, splat (double 1.000000e+00)
  %2579 = fmul <2 x double> %2559, %2575
  %2580 = fcmp ogt <2 x double> %2573, %2579
  %2581 = and <2 x i1> %2578, %2580
  %2582 = fneg <2 x double> %2575
  %2583 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2582, <2 x double> %2559, <2 x double> %2573)
  %2584 = fmul <2 x double> %2565, %2583
  %2585 = select <2 x i1> %2581, <2 x double> %2584, <2 x double> zeroinitializer
  %2586 = fmul <2 x double> %2565, %2582
  %2587 = fdiv <2 x double> %2573, %2575
  %2588 = select <2 x i1> %2581, <2 x double> %2559, <2 x double> %2587
  %2589 = getelementptr inbounds nuw i8, ptr %2571, i64 2112
  %2590 = load <2 x i64>, ptr %2589, align 16, !tbaa !26, !noalias !96
  %2591 = getelementptr inbounds nuw i8, ptr %2571, i64 560
  %2592 = load <2 x double>, ptr %2591, align 16, !tbaa !26, !noalias !96
  %2593 = fcmp ule <2 x double> %2592, zeroinitializer
  %2594 = xor <2 x i1> %2578, splat (i1 true)
  %2595 = select <2 x i1> %2594, <2 x i1> splat (i1 true), <2 x i1> %2593
  %2596 = getelementptr inbounds nuw i8, ptr %2571, i64 1584
  %2597 = load <2 x double>, ptr %2596, align 16, !tbaa !26, !noalias !96
  %2598 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2582, <2 x double> %2597, <2 x double> %2573)
  %2599 = fcmp ogt <2 x double> %2598, zeroinitializer
  %2600 = select <2 x i1> %2599, <2 x double> %2598, <2 x double> zeroinitializer
  %2601 = fmul <2 x double> %2565, %2600
  %2602 = icmp eq <2 x i64> %2590, zeroinitializer
  %2603 = select <2 x i1> %2595, <2 x i1> splat (i1 true), <2 x i1> %2602
  %2604 = select <2 x i1> %2603, <2 x double> %2585, <2 x double> %2601
  %2605 = select <2 x i1> %2603, <2 x double> %2588, <2 x double> %2597
  %2606 = select <2 x i1> %2603, <2 x i1> %2581, <2 x i1> zeroinitializer
  %2607 = select <2 x i1> %2606, <2 x double> %2586, <2 x double> zeroinitializer
  %2608 = getelementptr inbounds nuw i8, ptr %2571, i64 1968
  %2609 = getelementptr inbounds nuw i8, ptr %2571, i64 2032
  %2610 = load <2 x double>, ptr %2609, align 16, !tbaa !26, !noalias !99
  %2611 = fcmp ole <2 x double> %2559, %2610
  %2612 = getelementptr inbounds nuw i8, ptr %2571, i64 2048
  %2613 = load <2 x double>, ptr %2612, align 16, !tbaa !26, !noalias !99
  %2614 = fcmp oge <2 x double> %2559, %2613
  %2615 = or <2 x i1> %2611, %2614
  %2616 = bitcast <2 x i1> %2615 to i2
  %2617 = icmp eq i2 %2616, 0
  br i1 %2617, label %2618, label %2626

2618:                                             ; preds = %2566
  %2619 = load <2 x double>, ptr %2608, align 16, !tbaa !26, !noalias !99
  %2620 = getelementptr inbounds nuw i8, ptr %2571, i64 1984
  %2621 = load <2 x double>, ptr %2620, align 16, !tbaa !26, !noalias !99
  %2622 = getelementptr inbounds nuw i8, ptr %2571, i64 2016
  %2623 = load <2 x double>, ptr %2622, align 16, !tbaa !26, !noalias !99
  %2624 = getelementptr inbounds nuw i8, ptr %2571, i64 2000
  %2625 = load <2 x double>, ptr %2624, align 16, !tbaa !26, !noalias !99
  br label %2747

2626:                                             ; preds = %2566
  %2627 = load i64, ptr %132, align 16, !tbaa !21, !noalias !102
  %2628 = sitofp i64 %2627 to double
  %2629 = insertelement <2 x double> poison, double %2628, i64 0
  %2630 = shufflevector <2 x double> %2629, <2 x double> poison, <2 x i32> zeroinitializer
  %2631 = icmp sgt i64 %2627, 0
  br i1 %2631, label %2632, label %2722

2632:                                             ; preds = %2626
  %2633 = getelementptr inbounds nuw i8, ptr %2571, i64 2184
  %2634 = load ptr, ptr %2633, align 8, !tbaa !84, !noalias !102
  %2635 = getelementptr inbounds nuw i8, ptr %2571, i64 2192
  %2636 = load ptr, ptr %2635, align 16, !tbaa !85, !noalias !102
  %2637 = getelementptr inbounds nuw i8, ptr %2571, i64 2128
  %2638 = load i64, ptr %2637, align 16, !tbaa !31, !noalias !102
  %2639 = getelementptr inbounds nuw i8, ptr %2571, i64 2208
  %2640 = getelementptr inbounds nuw i8, ptr %2571, i64 2200
  %2641 = getelementptr inbounds nuw i8, ptr %2571, i64 2216
  br label %2642

2642:                                             ; preds = %2632, %2690
  %2643 = phi <2 x i64> [ splat (i64 -1), %2632 ], [ %2662, %2690 ]
  %2644 = phi i64 [ %2627, %2632 ], [ %2652, %2690 ]
  %2645 = phi <2 x double> [ splat (double 1.000000e+09), %2632 ], [ %2705, %2690 ]
  %2646 = phi <2 x double> [ zeroinitializer, %2632 ], [ %2709, %2690 ]
  %2647 = phi <2 x double> [ splat (double 1.000000e+09), %2632 ], [ %2687, %2690 ]
  %2648 = phi <2 x double> [ splat (double 1.000000e+00), %2632 ], [ %2686, %2690 ]
  %2649 = phi <2 x double> [ %2630, %2632 ], [ %2713, %2690 ]
  %2650 = phi <2 x double> [ zeroinitializer, %2632 ], [ %2702, %2690 ]
  %2651 = phi <2 x double> [ zeroinitializer, %2632 ], [ %2700, %2690 ]
  %2652 = add nsw i64 %2644, -1
  %2653 = getelementptr inbounds nuw <2 x double>, ptr %2634, i64 %2652
  %2654 = load <2 x double>, ptr %2653, align 16, !tbaa !26, !noalias !102
  %2655 = getelementptr inbounds nuw <2 x double>, ptr %2636, i64 %2652
  %2656 = load <2 x double>, ptr %2655, align 16, !tbaa !26, !noalias !102
  %2657 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2656, <2 x double> %2559, <2 x double> %2654)
  %2658 = fsub <2 x double> %2657, %2559
  %2659 = fcmp ogt <2 x double> %2658, splat (double 1.000000e-09)
  %2660 = select <2 x i1> %2659, <2 x i64> %2643, <2 x i64> zeroinitializer
  %2661 = icmp sgt i64 %2644, %2638
  %2662 = select i1 %2661, <2 x i64> %2660, <2 x i64> zeroinitializer
  %2663 = icmp slt i64 %2644, %2627
  br i1 %2663, label %2664, label %2676

2664:                                             ; preds = %2642
  %2665 = load ptr, ptr %2639, align 16, !tbaa !82, !noalias !102
  %2666 = getelementptr inbounds nuw <2 x double>, ptr %2665, i64 %2644
  %2667 = load <2 x double>, ptr %2666, align 16, !tbaa !26, !noalias !102
  %2668 = fmul <2 x double> %2658, %2667
  %2669 = icmp eq <2 x i64> %2662, %2643
  %2670 = select <2 x i1> %2669, <2 x double> zeroinitializer, <2 x double> %2668
  %2671 = fadd <2 x double> %2651, %2670
  %2672 = fadd <2 x double> %2656, splat (double -1.000000e+00)
  %2673 = fmul <2 x double> %2672, %2667
  %2674 = select <2 x i1> %2669, <2 x double> zeroinitializer, <2 x double> %2673
  %2675 = fadd <2 x double> %2650, %2674
  br label %2676

2676:                                             ; preds = %2664, %2642
  %2677 = phi <2 x double> [ %2671, %2664 ], [ %2651, %2642 ]
  %2678 = phi <2 x double> [ %2675, %2664 ], [ %2650, %2642 ]
  br i1 %2661, label %2679, label %2685

2679:                                             ; preds = %2676
  %2680 = fneg <2 x double> %2658
  %2681 = icmp eq <2 x i64> %2662, %2643
  %2682 = select <2 x i1> %2681, <2 x double> %2647, <2 x double> %2680
  %2683 = fsub <2 x double> splat (double 1.000000e+00), %2656
  %2684 = select <2 x i1> %2681, <2 x double> %2648, <2 x double> %2683
  br label %2685

2685:                                             ; preds = %2679, %2676
  %2686 = phi <2 x double> [ %2684, %2679 ], [ %2648, %2676 ]
  %2687 = phi <2 x double> [ %2682, %2679 ], [ %2647, %2676 ]
  %2688 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2662)
  %2689 = icmp eq i64 %2688, 0
  br i1 %2689, label %2715, label %2690

2690:                                             ; preds = %2685
  %2691 = load ptr, ptr %2640, align 8, !tbaa !81, !noalias !102
  %2692 = getelementptr inbounds nuw <2 x double>, ptr %2691, i64 %2652
  %2693 = load <2 x double>, ptr %2692, align 16, !tbaa !26, !noalias !102
  %2694 = load ptr, ptr %2641, align 8, !tbaa !83, !noalias !102
  %2695 = getelementptr inbounds nuw <2 x double>, ptr %2694, i64 %2652
  %2696 = load <2 x double>, ptr %2695, align 16, !tbaa !26, !noalias !102
  %2697 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2696, <2 x double> %2559, <2 x double> %2693)
  %2698 = icmp eq <2 x i64> %2662, zeroinitializer
  %2699 = select <2 x i1> %2698, <2 x double> zeroinitializer, <2 x double> %2697
  %2700 = fadd <2 x double> %2677, %2699
  %2701 = select <2 x i1> %2698, <2 x double> zeroinitializer, <2 x double> %2696
  %2702 = fadd <2 x double> %2678, %2701
  %2703 = fcmp olt <2 x double> %2645, %2658
  %2704 = select <2 x i1> %2698, <2 x i1> splat (i1 true), <2 x i1> %2703
  %2705 = select <2 x i1> %2704, <2 x double> %2645, <2 x double> %2658
  %2706 = fsub <2 x double> splat (double 1.000000e+00), %2656
  %2707 = fcmp ogt <2 x double> %2646, %2706
  %2708 = select <2 x i1> %2698, <2 x i1> splat (i1 true), <2 x i1> %2707
  %2709 = select <2 x i1> %2708, <2 x double> %2646, <2 x double> %2706
  %2710 = uitofp nneg i64 %2652 to double
  %2711 = insertelement <2 x double> poison, double %2710, i64 0
  %2712 = shufflevector <2 x double> %2711, <2 x double> poison, <2 x i32> zeroinitializer
  %2713 = select <2 x i1> %2698, <2 x double> %2649, <2 x double> %2712
  %2714 = icmp samesign ugt i64 %2644, 1
  br i1 %2714, label %2642, label %2715, !llvm.loop !105

2715:                                             ; preds = %2685, %2690
  %2716 = phi <2 x double> [ %2713, %2690 ], [ %2649, %2685 ]
  %2717 = phi <2 x double> [ %2709, %2690 ], [ %2646, %2685 ]
  %2718 = phi <2 x double> [ %2705, %2690 ], [ %2645, %2685 ]
  %2719 = phi <2 x double> [ %2700, %2690 ], [ %2677, %2685 ]
  %2720 = phi <2 x double> [ %2702, %2690 ], [ %2678, %2685 ]
  %2721 = fdiv <2 x double> %2687, %2686
  br label %2722

2722:                                             ; preds = %2715, %2626
  %2723 = phi <2 x double> [ %2630, %2626 ], [ %2716, %2715 ]
  %2724 = phi <2 x double> [ zeroinitializer, %2626 ], [ %2717, %2715 ]
  %2725 = phi <2 x double> [ splat (double 1.000000e+09), %2626 ], [ %2718, %2715 ]
  %2726 = phi <2 x double> [ zeroinitializer, %2626 ], [ %2719, %2715 ]
  %2727 = phi <2 x double> [ zeroinitializer, %2626 ], [ %2720, %2715 ]
  %2728 = phi <2 x double> [ splat (double 1.000000e+09), %2626 ], [ %2721, %2715 ]
  %2729 = fsub <2 x double> %2559, %2728
  %2730 = fcmp ogt <2 x double> %2724, splat (double 1.000000e-09)
  %2731 = select <2 x i1> %2730, <2 x double> %2724, <2 x double> splat (double 1.000000e-09)
  %2732 = fdiv <2 x double> %2725, %2731
  %2733 = fadd <2 x double> %2559, %2732
  %2734 = load <2 x double>, ptr %2608, align 16, !tbaa !26, !noalias !99
  %2735 = select <2 x i1> %2615, <2 x double> %2726, <2 x double> %2734
  store <2 x double> %2735, ptr %2608, align 16, !tbaa !26, !noalias !99
  %2736 = getelementptr inbounds nuw i8, ptr %2571, i64 1984
  %2737 = load <2 x double>, ptr %2736, align 16, !tbaa !26, !noalias !99
  %2738 = select <2 x i1> %2615, <2 x double> %2727, <2 x double> %2737
  store <2 x double> %2738, ptr %2736, align 16, !tbaa !26, !noalias !99
  %2739 = getelementptr inbounds nuw i8, ptr %2571, i64 2000
  %2740 = load <2 x double>, ptr %2739, align 16, !tbaa !26, !noalias !99
  %2741 = select <2 x i1> %2615, <2 x double> %2723, <2 x double> %2740
  store <2 x double> %2741, ptr %2739, align 16, !tbaa !26, !noalias !99
  %2742 = getelementptr inbounds nuw i8, ptr %2571, i64 2016
  %2743 = load <2 x double>, ptr %2742, align 16, !tbaa !26, !noalias !99
  %2744 = select <2 x i1> %2615, <2 x double> %2559, <2 x double> %2743
  store <2 x double> %2744, ptr %2742, align 16, !tbaa !26, !noalias !99
  %2745 = select <2 x i1> %2615, <2 x double> %2729, <2 x double> %2610
  store <2 x double> %2745, ptr %2609, align 16, !tbaa !26, !noalias !99
  %2746 = select <2 x i1> %2615, <2 x double> %2733, <2 x double> %2613
  store <2 x double> %2746, ptr %2612, align 16, !tbaa !26, !noalias !99
  br label %2747

2747:                                             ; preds = %2618, %2722
  %2748 = phi <2 x double> [ %2625, %2618 ], [ %2741, %2722 ]
  %2749 = phi <2 x double> [ %2623, %2618 ], [ %2744, %2722 ]
  %2750 = phi <2 x double> [ %2621, %2618 ], [ %2738, %2722 ]
  %2751 = phi <2 x double> [ %2619, %2618 ], [ %2735, %2722 ]
  %2752 = fsub <2 x double> %2559, %2749
  %2753 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2750, <2 x double> %2752, <2 x double> %2751)
  %2754 = getelementptr inbounds nuw i8, ptr %2571, i64 1616
  %2755 = load <2 x double>, ptr %2754, align 16, !tbaa !26, !noalias !96
  %2756 = getelementptr inbounds nuw i8, ptr %2571, i64 1472
  %2757 = load <2 x double>, ptr %2756, align 16, !tbaa !26, !noalias !96
  %2758 = getelementptr inbounds nuw i8, ptr %2571, i64 1856
  %2759 = load <2 x double>, ptr %2758, align 16, !tbaa !26, !noalias !96
  %2760 = fneg <2 x double> %2759
  %2761 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2755, <2 x double> %2757, <2 x double> %2760)
  %2762 = getelementptr inbounds nuw i8, ptr %2571, i64 1840
  %2763 = load <2 x double>, ptr %2762, align 16, !tbaa !26, !noalias !96
  %2764 = fadd <2 x double> %2755, %2763
  %2765 = getelementptr inbounds nuw i8, ptr %2571, i64 2080
  %2766 = load <2 x i64>, ptr %2765, align 16, !tbaa !26, !noalias !96
  %2767 = getelementptr inbounds nuw i8, ptr %2571, i64 2288
  %2768 = load ptr, ptr %2767, align 16, !tbaa !90, !noalias !96
  %2769 = load <2 x double>, ptr %2768, align 16, !tbaa !26, !noalias !96
  %2770 = fmul <2 x double> %2755, %2769
  %2771 = icmp eq <2 x i64> %2766, zeroinitializer
  %2772 = select <2 x i1> %2771, <2 x double> %2761, <2 x double> %2770
  %2773 = getelementptr inbounds nuw i8, ptr %2571, i64 2296
  %2774 = load ptr, ptr %2773, align 8, !tbaa !91, !noalias !96
  %2775 = load <2 x double>, ptr %2774, align 16, !tbaa !26, !noalias !96
  %2776 = fsub <2 x double> splat (double 1.000000e+00), %2775
  %2777 = fmul <2 x double> %2755, %2776
  %2778 = select <2 x i1> %2771, <2 x double> %2764, <2 x double> %2777
  %2779 = fneg <2 x double> %2778
  %2780 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2779, <2 x double> %2559, <2 x double> %2772)
  %2781 = load i64, ptr %132, align 16, !tbaa !21, !noalias !96
  %2782 = sitofp i64 %2781 to double
  %2783 = insertelement <2 x double> poison, double %2782, i64 0
  %2784 = shufflevector <2 x double> %2783, <2 x double> poison, <2 x i32> zeroinitializer
  %2785 = fcmp olt <2 x double> %2748, %2784
  %2786 = and <2 x i1> %2578, %2785
  %2787 = fcmp ogt <2 x double> %2753, zeroinitializer
  %2788 = fcmp oge <2 x double> %2780, zeroinitializer
  %2789 = and <2 x i1> %2787, %2788
  %2790 = and <2 x i1> %2789, %2786
  %2791 = sext <2 x i1> %2790 to <2 x i64>
  %2792 = xor <2 x i64> %2791, splat (i64 -1)
  %2793 = fadd <2 x double> %2753, %2780
  %2794 = fcmp ogt <2 x double> %2793, zeroinitializer
  %2795 = and <2 x i1> %2794, %2786
  %2796 = select <2 x i1> %2795, <2 x i64> %2792, <2 x i64> zeroinitializer
  %2797 = or <2 x i64> %2796, %2791
  %2798 = fmul <2 x double> %2565, %2780
  %2799 = select <2 x i1> %2790, <2 x double> %2798, <2 x double> zeroinitializer
  %2800 = icmp eq <2 x i64> %2797, zeroinitializer
  %2801 = select <2 x i1> %2800, <2 x double> %2604, <2 x double> %2799
  %2802 = select <2 x i1> %2800, <2 x double> %2605, <2 x double> %2559
  %2803 = fsub <2 x double> %2750, %2778
  %2804 = fmul <2 x double> %2565, %2803
  %2805 = select <2 x i1> %2800, <2 x double> %2607, <2 x double> %2804
  %2806 = getelementptr inbounds nuw i8, ptr %2571, i64 1504
  store <2 x double> %2801, ptr %2806, align 16, !tbaa !26, !noalias !96
  %2807 = getelementptr inbounds nuw i8, ptr %2571, i64 1488
  store <2 x double> %2802, ptr %2807, align 16, !tbaa !26, !noalias !96
  %2808 = fmul <2 x double> %2565, %2753
  %2809 = fmul <2 x double> %2565, %2793
  %2810 = icmp eq <2 x i64> %2796, zeroinitializer
  %2811 = select <2 x i1> %2810, <2 x double> zeroinitializer, <2 x double> %2809
  %2812 = select <2 x i1> %2790, <2 x double> %2808, <2 x double> %2811
  %2813 = getelementptr inbounds nuw i8, ptr %2571, i64 1520
  store <2 x double> %2812, ptr %2813, align 16, !tbaa !26, !noalias !96
  %2814 = load i64, ptr %132, align 16, !tbaa !21, !noalias !96
  %2815 = sitofp i64 %2814 to double
  %2816 = insertelement <2 x double> poison, double %2815, i64 0
  %2817 = shufflevector <2 x double> %2816, <2 x double> poison, <2 x i32> zeroinitializer
  %2818 = select <2 x i1> %2800, <2 x double> %2817, <2 x double> %2748
  %2819 = getelementptr inbounds nuw i8, ptr %2571, i64 1536
  store <2 x double> %2818, ptr %2819, align 16, !tbaa !26, !noalias !96
  %2820 = getelementptr inbounds nuw i8, ptr %2571, i64 32
  %2821 = load <2 x double>, ptr %2820, align 16, !tbaa !26, !noalias !96
  %2822 = fadd <2 x double> %2801, %2812
  %2823 = fmul <2 x double> %2821, %2822
  %2824 = fmul <2 x double> %2821, %2805
  %2825 = fadd <2 x double> %2568, %2823
  %2826 = fadd <2 x double> %2567, %2824
  %2827 = add nuw nsw i64 %2569, 1
  %2828 = load i64, ptr %169, align 8, !tbaa !20, !noalias !96
  %2829 = icmp slt i64 %2827, %2828
  br i1 %2829, label %2566, label %2830, !llvm.loop !106

2830:                                             ; preds = %2747, %2524
  %2831 = phi <2 x double> [ zeroinitializer, %2524 ], [ %2825, %2747 ]
  %2832 = phi <2 x double> [ zeroinitializer, %2524 ], [ %2826, %2747 ]
  %2833 = fsub <2 x double> %2530, %2494
  %2834 = fcmp ogt <2 x double> %2833, zeroinitializer
  %2835 = select <2 x i1> %2834, <2 x double> %2833, <2 x double> zeroinitializer
  %2836 = fadd <2 x double> %2559, splat (double 2.731500e+02)
  %2837 = fdiv <2 x double> %2835, splat (double 4.615260e+02)
  %2838 = fadd <2 x double> %2521, %2837
  %2839 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2840 = fdiv <2 x double> %2838, %2839
  %2841 = fmul <2 x double> %2839, %2840
  %2842 = fdiv <2 x double> %2530, %2841
  %2843 = load <2 x double>, ptr %187, align 16, !tbaa !26, !noalias !107
  %2844 = fsub <2 x double> %2530, %2843
  %2845 = load <2 x double>, ptr %200, align 16, !tbaa !26, !noalias !107
  %2846 = fsub <2 x double> %2844, %2845
  %2847 = load <2 x double>, ptr %201, align 16, !tbaa !26, !noalias !107
  %2848 = load <2 x double>, ptr %151, align 16, !tbaa !26, !noalias !107
  %2849 = fcmp une <2 x double> %2848, splat (double 2.000000e+00)
  %2850 = load <2 x double>, ptr %202, align 16, !tbaa !26, !noalias !107
  %2851 = select <2 x i1> %2849, <2 x double> zeroinitializer, <2 x double> %2850
  %2852 = fadd <2 x double> %2847, %2851
  %2853 = fcmp ule <2 x double> %2844, zeroinitializer
  %2854 = fcmp ule <2 x double> %2852, zeroinitializer
  %2855 = or <2 x i1> %2853, %2854
  %2856 = fmul <2 x double> %2840, splat (double 2.000000e+00)
  %2857 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2856)
  %2858 = fmul <2 x double> %2857, %2852
  %2859 = fadd <2 x double> %2844, splat (double 2.000000e+02)
  %2860 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2859)
  %2861 = select <2 x i1> %2853, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2860
  %2862 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2844, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2863 = fmul <2 x double> %2862, %2858
  %2864 = fmul <2 x double> %2861, %2861
  %2865 = fmul <2 x double> %2861, %2864
  %2866 = fdiv <2 x double> %2863, %2865
  %2867 = fmul <2 x double> %2844, %2858
  %2868 = fdiv <2 x double> %2867, %2861
  %2869 = select <2 x i1> %2855, <2 x double> zeroinitializer, <2 x double> %2868
  %2870 = select <2 x i1> %2855, <2 x double> zeroinitializer, <2 x double> %2866
  %2871 = fcmp ule <2 x double> %2846, zeroinitializer
  %2872 = load <2 x double>, ptr %203, align 16, !tbaa !26, !noalias !107
  %2873 = fmul <2 x double> %2846, %2872
  %2874 = select <2 x i1> %2871, <2 x double> zeroinitializer, <2 x double> %2873
  %2875 = fadd <2 x double> %2874, %2869
  %2876 = select <2 x i1> %2871, <2 x double> zeroinitializer, <2 x double> %2872
  %2877 = fadd <2 x double> %2876, %2870
  %2878 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %2879 = fsub <2 x double> %2843, %2530
  %2880 = fcmp ule <2 x double> %2879, zeroinitializer
  %2881 = fcmp ule <2 x double> %2878, zeroinitializer
  %2882 = or <2 x i1> %2880, %2881
  %2883 = fmul <2 x double> %2523, %2878
  %2884 = fadd <2 x double> %2879, splat (double 2.000000e+02)
  %2885 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2884)
  %2886 = select <2 x i1> %2880, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2885
  %2887 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2879, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2888 = fmul <2 x double> %2887, %2883
  %2889 = fmul <2 x double> %2886, %2886
  %2890 = fmul <2 x double> %2886, %2889
  %2891 = fdiv <2 x double> %2888, %2890
  %2892 = fmul <2 x double> %2879, %2883
  %2893 = fdiv <2 x double> %2892, %2886
  %2894 = load <2 x double>, ptr %176, align 16, !tbaa !26, !noalias !110
  %2895 = load <2 x double>, ptr %189, align 16, !tbaa !26, !noalias !110
  %2896 = load <2 x double>, ptr %177, align 16, !tbaa !26, !noalias !110
  %2897 = load <2 x double>, ptr %190, align 16, !tbaa !26, !noalias !110
  %2898 = fmul <2 x double> %2896, %2897
  %2899 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2894, <2 x double> %2895, <2 x double> %2898)
  %2900 = load <2 x double>, ptr %193, align 16, !tbaa !26, !noalias !110
  %2901 = load <2 x double>, ptr %175, align 16, !tbaa !26, !noalias !110
  %2902 = load <2 x double>, ptr %191, align 16, !tbaa !26, !noalias !110
  %2903 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2900, <2 x double> %2901, <2 x double> %2902)
  %2904 = load <2 x double>, ptr %192, align 16, !tbaa !26, !noalias !110
  %2905 = fneg <2 x double> %2899
  %2906 = fmul <2 x double> %2900, %2905
  %2907 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2902, <2 x double> %2904, <2 x double> %2906)
  %2908 = fdiv <2 x double> %2907, %2903
  %2909 = fcmp ogt <2 x double> %2835, splat (double 2.000000e+03)
  %2910 = select <2 x i1> %2909, <2 x double> %2835, <2 x double> splat (double 2.000000e+03)
  %2911 = fmul <2 x double> %2910, splat (double 0x3EB0C6F7A0B5ED8D)
  %2912 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2911)
  %2913 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2912)
  %2914 = fmul <2 x double> %2913, %2913
  %2915 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2913, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2914)
  %2916 = fadd <2 x double> %2915, splat (double 0x402DD4891DBECC6B)
  %2917 = fmul <2 x double> %2913, splat (double 0x40C77A698FD9BCCA)
  %2918 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2914, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2917)
  %2919 = fadd <2 x double> %2918, splat (double 0xC0B2D7440748F0B3)
  %2920 = fmul <2 x double> %2913, splat (double 0xC148A99584203885)
  %2921 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2914, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2920)
  %2922 = fadd <2 x double> %2921, splat (double 0x4118B9E59F2691E5)
  %2923 = fmul <2 x double> %2922, splat (double 2.000000e+00)
  %2924 = fneg <2 x double> %2919
  %2925 = fmul <2 x double> %2916, splat (double 4.000000e+00)
  %2926 = fneg <2 x double> %2922
  %2927 = fmul <2 x double> %2925, %2926
  %2928 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2919, <2 x double> %2919, <2 x double> %2927)
  %2929 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2928)
  %2930 = fsub <2 x double> %2924, %2929
  %2931 = fdiv <2 x double> %2923, %2930
  %2932 = fadd <2 x double> %2931, splat (double 0x408451671D164BD4)
  %2933 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2931, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2934 = fmul <2 x double> %2933, splat (double -4.000000e+00)
  %2935 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2932, <2 x double> %2932, <2 x double> %2934)
  %2936 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2935)
  %2937 = fsub <2 x double> %2932, %2936
  %2938 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2937, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2939 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2938, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2940 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2938, <2 x double> %2939, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2941 = fadd <2 x double> %2938, splat (double 2.731500e+02)
  %2942 = fcmp ule <2 x double> %2938, %2908
  %2943 = load <2 x double>, ptr %205, align 16, !tbaa !26, !noalias !110
  %2944 = fmul <2 x double> %2903, %2943
  %2945 = fadd <2 x double> %2903, %2943
  %2946 = fdiv <2 x double> %2944, %2945
  %2947 = fdiv <2 x double> %2946, %2940
  %2948 = fmul <2 x double> %2941, splat (double 4.615260e+02)
  %2949 = fmul <2 x double> %2910, %2940
  %2950 = fmul <2 x double> %2938, %2943
  %2951 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2908, <2 x double> %2903, <2 x double> %2950)
  %2952 = fdiv <2 x double> %2951, %2945
  %2953 = select <2 x i1> %2942, <2 x double> %2908, <2 x double> %2952
  store <2 x double> %2953, ptr %195, align 16, !tbaa !26, !noalias !110
  %2954 = fsub <2 x double> %2938, %2908
  %2955 = fmul <2 x double> %2954, %2947
  %2956 = select <2 x i1> %2942, <2 x double> zeroinitializer, <2 x double> %2955
  %2957 = fmul <2 x double> %2836, splat (double 4.615260e+02)
  %2958 = fmul <2 x double> %2836, %2957
  %2959 = fmul <2 x double> %2530, %2561
  %2960 = fdiv <2 x double> %2958, %2959
  %2961 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2901, <2 x double> %2530, <2 x double> %2505)
  %2962 = fsub <2 x double> %2831, %2956
  %2963 = fmul <2 x double> %2962, splat (double -4.615260e+02)
  %2964 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2508, <2 x double> %2961, <2 x double> %2963)
  %2965 = fmul <2 x double> %2893, splat (double -2.870530e+02)
  %2966 = select <2 x i1> %2882, <2 x double> splat (double -0.000000e+00), <2 x double> %2965
  %2967 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2842, <2 x double> %2875, <2 x double> %2966)
  %2968 = fadd <2 x double> %2967, %2964
  %2969 = fneg <2 x double> %2941
  %2970 = fmul <2 x double> %2948, %2969
  %2971 = fdiv <2 x double> %2970, %2949
  %2972 = fmul <2 x double> %2971, %2947
  %2973 = select <2 x i1> %2942, <2 x double> splat (double -0.000000e+00), <2 x double> %2972
  %2974 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2832, <2 x double> %2960, <2 x double> %2973)
  %2975 = fmul <2 x double> %2974, splat (double -4.615260e+02)
  %2976 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2508, <2 x double> %2901, <2 x double> %2975)
  %2977 = fmul <2 x double> %2891, splat (double 2.870530e+02)
  %2978 = select <2 x i1> %2882, <2 x double> zeroinitializer, <2 x double> %2977
  %2979 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2842, <2 x double> %2877, <2 x double> %2978)
  %2980 = fadd <2 x double> %2979, %2976
  %2981 = fcmp ule <2 x double> %2968, zeroinitializer
  %2982 = fcmp olt <2 x double> %2527, %2530
  %2983 = select <2 x i1> %2981, <2 x i1> splat (i1 true), <2 x i1> %2982
  %2984 = select <2 x i1> %2983, <2 x double> %2527, <2 x double> %2530
  %2985 = fcmp ogt <2 x double> %2526, %2530
  %2986 = select <2 x i1> %2985, <2 x double> %2526, <2 x double> %2530
  %2987 = select <2 x i1> %2981, <2 x double> %2986, <2 x double> %2526
  %2988 = fdiv <2 x double> %2968, %2980
  %2989 = fsub <2 x double> %2530, %2988
  %2990 = fsub <2 x double> %2989, %2530
  %2991 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2990)
  %2992 = fcmp uge <2 x double> %2991, splat (double 2.000000e-01)
  %2993 = fcmp uge <2 x double> %2987, %2989
  %2994 = fcmp uge <2 x double> %2989, %2984
  %2995 = or <2 x i1> %2993, %2994
  %2996 = and <2 x i1> %2992, %2995
  %2997 = fadd <2 x double> %2987, %2984
  %2998 = fmul <2 x double> %2997, splat (double 5.000000e-01)
  %2999 = select <2 x i1> %2996, <2 x double> %2998, <2 x double> %2989
  %3000 = fsub <2 x double> %2999, %2530
  %3001 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3000)
  %3002 = fcmp oge <2 x double> %3001, splat (double 2.000000e-01)
  %3003 = select <2 x i1> %3002, <2 x i64> %2528, <2 x i64> zeroinitializer
  %3004 = icmp eq <2 x i64> %3003, zeroinitializer
  %3005 = select <2 x i1> %3004, <2 x double> %2530, <2 x double> %2999
  %3006 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3003)
  %3007 = icmp ne i64 %3006, 0
  %3008 = add nuw nsw i32 %2529, 1
  %3009 = icmp samesign ult i32 %2529, 59
  %3010 = select i1 %3007, i1 %3009, i1 false
  br i1 %3010, label %2524, label %3011, !llvm.loop !113

3011:                                             ; preds = %2830
  %3012 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %3013 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %3014 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %3015 = load <2 x double>, ptr %207, align 16, !tbaa !26
  %3016 = fmul <2 x double> %3014, %3015
  %3017 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3012, <2 x double> %3013, <2 x double> %3016)
  %3018 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %3019 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %3020 = fsub <2 x double> %3019, %3005
  %3021 = fcmp ule <2 x double> %3020, zeroinitializer
  %3022 = fcmp ule <2 x double> %3018, zeroinitializer
  %3023 = or <2 x i1> %3022, %3021
  %3024 = fmul <2 x double> %2523, %3018
  %3025 = fadd <2 x double> %3020, splat (double 2.000000e+02)
  %3026 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %3025)
  %3027 = select <2 x i1> %3021, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %3026
  %3028 = fmul <2 x double> %3024, %3020
  %3029 = fdiv <2 x double> %3028, %3027
  %3030 = fmul <2 x double> %3029, splat (double 2.870530e+02)
  %3031 = select <2 x i1> %3023, <2 x double> zeroinitializer, <2 x double> %3030
  %3032 = fdiv <2 x double> %3031, %2508
  %3033 = fsub <2 x double> %3032, %3017
  %3034 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %3035 = load <2 x double>, ptr %198, align 16, !tbaa !26
  %3036 = fmul <2 x double> %2840, %3035
  %3037 = fdiv <2 x double> %2875, %3036
  %3038 = fadd <2 x double> %3034, %3037
  %3039 = fdiv <2 x double> %3033, %3038
  %3040 = fcmp ogt <2 x double> %3039, zeroinitializer
  %3041 = select <2 x i1> %3040, <2 x double> %3039, <2 x double> zeroinitializer
  %3042 = fcmp olt <2 x double> %3041, %3005
  %3043 = select <2 x i1> %3042, <2 x double> %3041, <2 x double> %3005
  %3044 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %3045 = select <2 x i1> %2519, <2 x double> %3044, <2 x double> %3043
  store <2 x double> %3045, ptr %194, align 16, !tbaa !26
  %3046 = select <2 x i1> %2519, <2 x double> %2496, <2 x double> %2953
  store <2 x double> %3046, ptr %195, align 16, !tbaa !26
  store <2 x double> %3005, ptr %188, align 16, !tbaa !26
  store <2 x double> %2559, ptr %208, align 16, !tbaa !26
  %3047 = load i64, ptr %169, align 8, !tbaa !20
  br label %3304

3048:                                             ; preds = %2475
  store <2 x double> %2477, ptr %208, align 16, !tbaa !26
  %3049 = load i64, ptr %169, align 8, !tbaa !20, !noalias !114
  %3050 = icmp sgt i64 %3049, 0
  br i1 %3050, label %3051, label %3307

3051:                                             ; preds = %3048
  %3052 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2477, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3053 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2477, <2 x double> %3052, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3054 = fdiv <2 x double> splat (double 1.000000e+00), %3053
  br label %3055

3055:                                             ; preds = %3051, %3231
  %3056 = phi i64 [ 0, %3051 ], [ %3301, %3231 ]
  %3057 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !114
  %3058 = getelementptr inbounds nuw %struct.Piece, ptr %3057, i64 %3056
  %3059 = getelementptr inbounds nuw i8, ptr %3058, i64 1552
  %3060 = load <2 x double>, ptr %3059, align 16, !tbaa !26, !noalias !114
  %3061 = getelementptr inbounds nuw i8, ptr %3058, i64 1568
  %3062 = load <2 x double>, ptr %3061, align 16, !tbaa !26, !noalias !114
  %3063 = getelementptr inbounds nuw i8, ptr %3058, i64 1920
  %3064 = load <2 x double>, ptr %3063, align 16, !tbaa !26, !noalias !114
  %3065 = fcmp ule <2 x double> %3064, splat (double 1.000000e+00)
  %3066 = fmul <2 x double> %2477, %3062
  %3067 = fcmp ogt <2 x double> %3060, %3066
  %3068 = and <2 x i1> %3065, %3067
  %3069 = fneg <2 x double> %3062
  %3070 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3069, <2 x double> %2477, <2 x double> %3060)
  %3071 = fmul <2 x double> %3054, %3070
  %3072 = select <2 x i1> %3068, <2 x double> %3071, <2 x double> zeroinitializer
  %3073 = fdiv <2 x double> %3060, %3062
  %3074 = select <2 x i1> %3068, <2 x double> %2477, <2 x double> %3073
  %3075 = getelementptr inbounds nuw i8, ptr %3058, i64 2112
  %3076 = load <2 x i64>, ptr %3075, align 16, !tbaa !26, !noalias !114
  %3077 = getelementptr inbounds nuw i8, ptr %3058, i64 560
  %3078 = load <2 x double>, ptr %3077, align 16, !tbaa !26, !noalias !114
  %3079 = fcmp ule <2 x double> %3078, zeroinitializer
  %3080 = xor <2 x i1> %3065, splat (i1 true)
  %3081 = select <2 x i1> %3080, <2 x i1> splat (i1 true), <2 x i1> %3079
  %3082 = getelementptr inbounds nuw i8, ptr %3058, i64 1584
  %3083 = load <2 x double>, ptr %3082, align 16, !tbaa !26, !noalias !114
  %3084 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3069, <2 x double> %3083, <2 x double> %3060)
  %3085 = fcmp ogt <2 x double> %3084, zeroinitializer
  %3086 = select <2 x i1> %3085, <2 x double> %3084, <2 x double> zeroinitializer
  %3087 = fmul <2 x double> %3054, %3086
  %3088 = icmp eq <2 x i64> %3076, zeroinitializer
  %3089 = select <2 x i1> %3081, <2 x i1> splat (i1 true), <2 x i1> %3088
  %3090 = select <2 x i1> %3089, <2 x double> %3072, <2 x double> %3087
  %3091 = select <2 x i1> %3089, <2 x double> %3074, <2 x double> %3083
  %3092 = getelementptr inbounds nuw i8, ptr %3058, i64 1968
  %3093 = getelementptr inbounds nuw i8, ptr %3058, i64 2032
  %3094 = load <2 x double>, ptr %3093, align 16, !tbaa !26, !noalias !117
  %3095 = fcmp ole <2 x double> %2477, %3094
  %3096 = getelementptr inbounds nuw i8, ptr %3058, i64 2048
  %3097 = load <2 x double>, ptr %3096, align 16, !tbaa !26, !noalias !117
  %3098 = fcmp oge <2 x double> %2477, %3097
  %3099 = or <2 x i1> %3095, %3098
  %3100 = bitcast <2 x i1> %3099 to i2
  %3101 = icmp eq i2 %3100, 0
  br i1 %3101, label %3102, label %3110

3102:                                             ; preds = %3055
  %3103 = load <2 x double>, ptr %3092, align 16, !tbaa !26, !noalias !117
  %3104 = getelementptr inbounds nuw i8, ptr %3058, i64 1984
  %3105 = load <2 x double>, ptr %3104, align 16, !tbaa !26, !noalias !117
  %3106 = getelementptr inbounds nuw i8, ptr %3058, i64 2016
  %3107 = load <2 x double>, ptr %3106, align 16, !tbaa !26, !noalias !117
  %3108 = getelementptr inbounds nuw i8, ptr %3058, i64 2000
  %3109 = load <2 x double>, ptr %3108, align 16, !tbaa !26, !noalias !117
  br label %3231

3110:                                             ; preds = %3055
  %3111 = load i64, ptr %132, align 16, !tbaa !21, !noalias !120
  %3112 = sitofp i64 %3111 to double
  %3113 = insertelement <2 x double> poison, double %3112, i64 0
  %3114 = shufflevector <2 x double> %3113, <2 x double> poison, <2 x i32> zeroinitializer
  %3115 = icmp sgt i64 %3111, 0
  br i1 %3115, label %3116, label %3206

3116:                                             ; preds = %3110
  %3117 = getelementptr inbounds nuw i8, ptr %3058, i64 2184
  %3118 = load ptr, ptr %3117, align 8, !tbaa !84, !noalias !120
  %3119 = getelementptr inbounds nuw i8, ptr %3058, i64 2192
  %3120 = load ptr, ptr %3119, align 16, !tbaa !85, !noalias !120
  %3121 = getelementptr inbounds nuw i8, ptr %3058, i64 2128
  %3122 = load i64, ptr %3121, align 16, !tbaa !31, !noalias !120
  %3123 = getelementptr inbounds nuw i8, ptr %3058, i64 2208
  %3124 = getelementptr inbounds nuw i8, ptr %3058, i64 2200
  %3125 = getelementptr inbounds nuw i8, ptr %3058, i64 2216
  br label %3126

3126:                                             ; preds = %3116, %3174
  %3127 = phi <2 x i64> [ splat (i64 -1), %3116 ], [ %3146, %3174 ]
  %3128 = phi i64 [ %3111, %3116 ], [ %3136, %3174 ]
  %3129 = phi <2 x double> [ splat (double 1.000000e+09), %3116 ], [ %3189, %3174 ]
  %3130 = phi <2 x double> [ zeroinitializer, %3116 ], [ %3193, %3174 ]
  %3131 = phi <2 x double> [ splat (double 1.000000e+09), %3116 ], [ %3171, %3174 ]
  %3132 = phi <2 x double> [ splat (double 1.000000e+00), %3116 ], [ %3170, %3174 ]
  %3133 = phi <2 x double> [ %3114, %3116 ], [ %3197, %3174 ]
  %3134 = phi <2 x double> [ zeroinitializer, %3116 ], [ %3186, %3174 ]
  %3135 = phi <2 x double> [ zeroinitializer, %3116 ], [ %3184, %3174 ]
  %3136 = add nsw i64 %3128, -1
  %3137 = getelementptr inbounds nuw <2 x double>, ptr %3118, i64 %3136
  %3138 = load <2 x double>, ptr %3137, align 16, !tbaa !26, !noalias !120
  %3139 = getelementptr inbounds nuw <2 x double>, ptr %3120, i64 %3136
  %3140 = load <2 x double>, ptr %3139, align 16, !tbaa !26, !noalias !120
  %3141 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3140, <2 x double> %2477, <2 x double> %3138)
  %3142 = fsub <2 x double> %3141, %2477
  %3143 = fcmp ogt <2 x double> %3142, splat (double 1.000000e-09)
  %3144 = select <2 x i1> %3143, <2 x i64> %3127, <2 x i64> zeroinitializer
  %3145 = icmp sgt i64 %3128, %3122
  %3146 = select i1 %3145, <2 x i64> %3144, <2 x i64> zeroinitializer
  %3147 = icmp slt i64 %3128, %3111
  br i1 %3147, label %3148, label %3160

3148:                                             ; preds = %3126
  %3149 = load ptr, ptr %3123, align 16, !tbaa !82, !noalias !120
  %3150 = getelementptr inbounds nuw <2 x double>, ptr %3149, i64 %3128
  %3151 = load <2 x double>, ptr %3150, align 16, !tbaa !26, !noalias !120
  %3152 = fmul <2 x double> %3142, %3151
  %3153 = icmp eq <2 x i64> %3146, %3127
  %3154 = select <2 x i1> %3153, <2 x double> zeroinitializer, <2 x double> %3152
  %3155 = fadd <2 x double> %3135, %3154
  %3156 = fadd <2 x double> %3140, splat (double -1.000000e+00)
  %3157 = fmul <2 x double> %3156, %3151
  %3158 = select <2 x i1> %3153, <2 x double> zeroinitializer, <2 x double> %3157
  %3159 = fadd <2 x double> %3134, %3158
  br label %3160

3160:                                             ; preds = %3148, %3126
  %3161 = phi <2 x double> [ %3155, %3148 ], [ %3135, %3126 ]
  %3162 = phi <2 x double> [ %3159, %3148 ], [ %3134, %3126 ]
  br i1 %3145, label %3163, label %3169

3163:                                             ; preds = %3160
  %3164 = fneg <2 x double> %3142
  %3165 = icmp eq <2 x i64> %3146, %3127
  %3166 = select <2 x i1> %3165, <2 x double> %3131, <2 x double> %3164
  %3167 = fsub <2 x double> splat (double 1.000000e+00), %3140
  %3168 = select <2 x i1> %3165, <2 x double> %3132, <2 x double> %3167
  br label %3169

3169:                                             ; preds = %3163, %3160
  %3170 = phi <2 x double> [ %3168, %3163 ], [ %3132, %3160 ]
  %3171 = phi <2 x double> [ %3166, %3163 ], [ %3131, %3160 ]
  %3172 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3146)
  %3173 = icmp eq i64 %3172, 0
  br i1 %3173, label %3199, label %3174

3174:                                             ; preds = %3169
  %3175 = load ptr, ptr %3124, align 8, !tbaa !81, !noalias !120
  %3176 = getelementptr inbounds nuw <2 x double>, ptr %3175, i64 %3136
  %3177 = load <2 x double>, ptr %3176, align 16, !tbaa !26, !noalias !120
  %3178 = load ptr, ptr %3125, align 8, !tbaa !83, !noalias !120
  %3179 = getelementptr inbounds nuw <2 x double>, ptr %3178, i64 %3136
  %3180 = load <2 x double>, ptr %3179, align 16, !tbaa !26, !noalias !120
  %3181 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3180, <2 x double> %2477, <2 x double> %3177)
  %3182 = icmp eq <2 x i64> %3146, zeroinitializer
  %3183 = select <2 x i1> %3182, <2 x double> zeroinitializer, <2 x double> %3181
  %3184 = fadd <2 x double> %3161, %3183
  %3185 = select <2 x i1> %3182, <2 x double> zeroinitializer, <2 x double> %3180
  %3186 = fadd <2 x double> %3162, %3185
  %3187 = fcmp olt <2 x double> %3129, %3142
  %3188 = select <2 x i1> %3182, <2 x i1> splat (i1 true), <2 x i1> %3187
  %3189 = select <2 x i1> %3188, <2 x double> %3129, <2 x double> %3142
  %3190 = fsub <2 x double> splat (double 1.000000e+00), %3140
  %3191 = fcmp ogt <2 x double> %3130, %3190
  %3192 = select <2 x i1> %3182, <2 x i1> splat (i1 true), <2 x i1> %3191
  %3193 = select <2 x i1> %3192, <2 x double> %3130, <2 x double> %3190
  %3194 = uitofp nneg i64 %3136 to double
  %3195 = insertelement <2 x double> poison, double %3194, i64 0
  %3196 = shufflevector <2 x double> %3195, <2 x double> poison, <2 x i32> zeroinitializer
  %3197 = select <2 x i1> %3182, <2 x double> %3133, <2 x double> %3196
  %3198 = icmp samesign ugt i64 %3128, 1
  br i1 %3198, label %3126, label %3199, !llvm.loop !105

3199:                                             ; preds = %3169, %3174
  %3200 = phi <2 x double> [ %3197, %3174 ], [ %3133, %3169 ]
  %3201 = phi <2 x double> [ %3193, %3174 ], [ %3130, %3169 ]
  %3202 = phi <2 x double> [ %3189, %3174 ], [ %3129, %3169 ]
  %3203 = phi <2 x double> [ %3184, %3174 ], [ %3161, %3169 ]
  %3204 = phi <2 x double> [ %3186, %3174 ], [ %3162, %3169 ]
  %3205 = fdiv <2 x double> %3171, %3170
  br label %3206

3206:                                             ; preds = %3199, %3110
  %3207 = phi <2 x double> [ %3114, %3110 ], [ %3200, %3199 ]
  %3208 = phi <2 x double> [ zeroinitializer, %3110 ], [ %3201, %3199 ]
  %3209 = phi <2 x double> [ splat (double 1.000000e+09), %3110 ], [ %3202, %3199 ]
  %3210 = phi <2 x double> [ zeroinitializer, %3110 ], [ %3203, %3199 ]
  %3211 = phi <2 x double> [ zeroinitializer, %3110 ], [ %3204, %3199 ]
  %3212 = phi <2 x double> [ splat (double 1.000000e+09), %3110 ], [ %3205, %3199 ]
  %3213 = fsub <2 x double> %2477, %3212
  %3214 = fcmp ogt <2 x double> %3208, splat (double 1.000000e-09)
  %3215 = select <2 x i1> %3214, <2 x double> %3208, <2 x double> splat (double 1.000000e-09)
  %3216 = fdiv <2 x double> %3209, %3215
  %3217 = fadd <2 x double> %2477, %3216
  %3218 = load <2 x double>, ptr %3092, align 16, !tbaa !26, !noalias !117
  %3219 = select <2 x i1> %3099, <2 x double> %3210, <2 x double> %3218
  store <2 x double> %3219, ptr %3092, align 16, !tbaa !26, !noalias !117
  %3220 = getelementptr inbounds nuw i8, ptr %3058, i64 1984
  %3221 = load <2 x double>, ptr %3220, align 16, !tbaa !26, !noalias !117
  %3222 = select <2 x i1> %3099, <2 x double> %3211, <2 x double> %3221
  store <2 x double> %3222, ptr %3220, align 16, !tbaa !26, !noalias !117
  %3223 = getelementptr inbounds nuw i8, ptr %3058, i64 2000
  %3224 = load <2 x double>, ptr %3223, align 16, !tbaa !26, !noalias !117
  %3225 = select <2 x i1> %3099, <2 x double> %3207, <2 x double> %3224
  store <2 x double> %3225, ptr %3223, align 16, !tbaa !26, !noalias !117
  %3226 = getelementptr inbounds nuw i8, ptr %3058, i64 2016
  %3227 = load <2 x double>, ptr %3226, align 16, !tbaa !26, !noalias !117
  %3228 = select <2 x i1> %3099, <2 x double> %2477, <2 x double> %3227
  store <2 x double> %3228, ptr %3226, align 16, !tbaa !26, !noalias !117
  %3229 = select <2 x i1> %3099, <2 x double> %3213, <2 x double> %3094
  store <2 x double> %3229, ptr %3093, align 16, !tbaa !26, !noalias !117
  %3230 = select <2 x i1> %3099, <2 x double> %3217, <2 x double> %3097
  store <2 x double> %3230, ptr %3096, align 16, !tbaa !26, !noalias !117
  br label %3231

3231:                                             ; preds = %3102, %3206
  %3232 = phi <2 x double> [ %3109, %3102 ], [ %3225, %3206 ]
  %3233 = phi <2 x double> [ %3107, %3102 ], [ %3228, %3206 ]
  %3234 = phi <2 x double> [ %3105, %3102 ], [ %3222, %3206 ]
  %3235 = phi <2 x double> [ %3103, %3102 ], [ %3219, %3206 ]
  %3236 = fsub <2 x double> %2477, %3233
  %3237 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3234, <2 x double> %3236, <2 x double> %3235)
  %3238 = getelementptr inbounds nuw i8, ptr %3058, i64 1616
  %3239 = load <2 x double>, ptr %3238, align 16, !tbaa !26, !noalias !114
  %3240 = getelementptr inbounds nuw i8, ptr %3058, i64 1472
  %3241 = load <2 x double>, ptr %3240, align 16, !tbaa !26, !noalias !114
  %3242 = getelementptr inbounds nuw i8, ptr %3058, i64 1856
  %3243 = load <2 x double>, ptr %3242, align 16, !tbaa !26, !noalias !114
  %3244 = fneg <2 x double> %3243
  %3245 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3239, <2 x double> %3241, <2 x double> %3244)
  %3246 = getelementptr inbounds nuw i8, ptr %3058, i64 1840
  %3247 = load <2 x double>, ptr %3246, align 16, !tbaa !26, !noalias !114
  %3248 = fadd <2 x double> %3239, %3247
  %3249 = getelementptr inbounds nuw i8, ptr %3058, i64 2080
  %3250 = load <2 x i64>, ptr %3249, align 16, !tbaa !26, !noalias !114
  %3251 = getelementptr inbounds nuw i8, ptr %3058, i64 2288
  %3252 = load ptr, ptr %3251, align 16, !tbaa !90, !noalias !114
  %3253 = load <2 x double>, ptr %3252, align 16, !tbaa !26, !noalias !114
  %3254 = fmul <2 x double> %3239, %3253
  %3255 = icmp eq <2 x i64> %3250, zeroinitializer
  %3256 = select <2 x i1> %3255, <2 x double> %3245, <2 x double> %3254
  %3257 = getelementptr inbounds nuw i8, ptr %3058, i64 2296
  %3258 = load ptr, ptr %3257, align 8, !tbaa !91, !noalias !114
  %3259 = load <2 x double>, ptr %3258, align 16, !tbaa !26, !noalias !114
  %3260 = fsub <2 x double> splat (double 1.000000e+00), %3259
  %3261 = fmul <2 x double> %3239, %3260
  %3262 = select <2 x i1> %3255, <2 x double> %3248, <2 x double> %3261
  %3263 = fneg <2 x double> %3262
  %3264 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3263, <2 x double> %2477, <2 x double> %3256)
  %3265 = load i64, ptr %132, align 16, !tbaa !21, !noalias !114
  %3266 = sitofp i64 %3265 to double
  %3267 = insertelement <2 x double> poison, double %3266, i64 0
  %3268 = shufflevector <2 x double> %3267, <2 x double> poison, <2 x i32> zeroinitializer
  %3269 = fcmp olt <2 x double> %3232, %3268
  %3270 = and <2 x i1> %3065, %3269
  %3271 = fcmp ogt <2 x double> %3237, zeroinitializer
  %3272 = fcmp oge <2 x double> %3264, zeroinitializer
  %3273 = and <2 x i1> %3271, %3272
  %3274 = and <2 x i1> %3273, %3270
  %3275 = sext <2 x i1> %3274 to <2 x i64>
  %3276 = xor <2 x i64> %3275, splat (i64 -1)
  %3277 = fadd <2 x double> %3237, %3264
  %3278 = fcmp ogt <2 x double> %3277, zeroinitializer
  %3279 = and <2 x i1> %3278, %3270
  %3280 = select <2 x i1> %3279, <2 x i64> %3276, <2 x i64> zeroinitializer
  %3281 = or <2 x i64> %3280, %3275
  %3282 = fmul <2 x double> %3054, %3264
  %3283 = select <2 x i1> %3274, <2 x double> %3282, <2 x double> zeroinitializer
  %3284 = icmp eq <2 x i64> %3281, zeroinitializer
  %3285 = select <2 x i1> %3284, <2 x double> %3090, <2 x double> %3283
  %3286 = select <2 x i1> %3284, <2 x double> %3091, <2 x double> %2477
  %3287 = getelementptr inbounds nuw i8, ptr %3058, i64 1504
  store <2 x double> %3285, ptr %3287, align 16, !tbaa !26, !noalias !114
  %3288 = getelementptr inbounds nuw i8, ptr %3058, i64 1488
  store <2 x double> %3286, ptr %3288, align 16, !tbaa !26, !noalias !114
  %3289 = fmul <2 x double> %3054, %3237
  %3290 = fmul <2 x double> %3054, %3277
  %3291 = icmp eq <2 x i64> %3280, zeroinitializer
  %3292 = select <2 x i1> %3291, <2 x double> zeroinitializer, <2 x double> %3290
  %3293 = select <2 x i1> %3274, <2 x double> %3289, <2 x double> %3292
  %3294 = getelementptr inbounds nuw i8, ptr %3058, i64 1520
  store <2 x double> %3293, ptr %3294, align 16, !tbaa !26, !noalias !114
  %3295 = load i64, ptr %132, align 16, !tbaa !21, !noalias !114
  %3296 = sitofp i64 %3295 to double
  %3297 = insertelement <2 x double> poison, double %3296, i64 0
  %3298 = shufflevector <2 x double> %3297, <2 x double> poison, <2 x i32> zeroinitializer
  %3299 = select <2 x i1> %3284, <2 x double> %3298, <2 x double> %3232
  %3300 = getelementptr inbounds nuw i8, ptr %3058, i64 1536
  store <2 x double> %3299, ptr %3300, align 16, !tbaa !26, !noalias !114
  %3301 = add nuw nsw i64 %3056, 1
  %3302 = load i64, ptr %169, align 8, !tbaa !20, !noalias !114
  %3303 = icmp slt i64 %3301, %3302
  br i1 %3303, label %3055, label %3304, !llvm.loop !106

3304:                                             ; preds = %3231, %3011
  %3305 = phi i64 [ %3047, %3011 ], [ %3302, %3231 ]
  %3306 = icmp sgt i64 %3305, 0
  br i1 %3306, label %3483, label %3307

3307:                                             ; preds = %3304, %3048
  %3308 = phi i64 [ %3305, %3304 ], [ %3049, %3048 ]
  %3309 = load <2 x double>, ptr %178, align 16, !tbaa !26
  br label %3384

3310:                                             ; preds = %3587
  %3311 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %3312 = icmp sgt i64 %3611, 0
  br i1 %3312, label %3313, label %3384

3313:                                             ; preds = %3310
  %3314 = load ptr, ptr %142, align 8, !tbaa !28
  %3315 = and i64 %3611, 1
  %3316 = icmp eq i64 %3611, 1
  br i1 %3316, label %3360, label %3317

3317:                                             ; preds = %3313
  %3318 = and i64 %3611, 9223372036854775806
  br label %3319

3319:                                             ; preds = %3319, %3317
  %3320 = phi <2 x double> [ zeroinitializer, %3317 ], [ %3351, %3319 ]
  %3321 = phi <2 x double> [ zeroinitializer, %3317 ], [ %3356, %3319 ]
  %3322 = phi i64 [ 0, %3317 ], [ %3357, %3319 ]
  %3323 = phi i64 [ 0, %3317 ], [ %3358, %3319 ]
  %3324 = getelementptr inbounds nuw %struct.Piece, ptr %3314, i64 %3322
  %3325 = getelementptr inbounds nuw i8, ptr %3324, i64 2112
  %3326 = load <2 x i64>, ptr %3325, align 16, !tbaa !26
  %3327 = getelementptr inbounds nuw i8, ptr %3324, i64 32
  %3328 = load <2 x double>, ptr %3327, align 16, !tbaa !26
  %3329 = getelementptr inbounds nuw i8, ptr %3324, i64 1680
  %3330 = load <2 x double>, ptr %3329, align 16, !tbaa !26
  %3331 = fmul <2 x double> %3328, %3330
  %3332 = icmp eq <2 x i64> %3326, zeroinitializer
  %3333 = select <2 x i1> %3332, <2 x double> %3331, <2 x double> zeroinitializer
  %3334 = fadd <2 x double> %3320, %3333
  %3335 = getelementptr inbounds nuw i8, ptr %3324, i64 1648
  %3336 = load <2 x double>, ptr %3335, align 16, !tbaa !26
  %3337 = fmul <2 x double> %3328, %3336
  %3338 = select <2 x i1> %3332, <2 x double> %3337, <2 x double> zeroinitializer
  %3339 = fadd <2 x double> %3321, %3338
  %3340 = or disjoint i64 %3322, 1
  %3341 = getelementptr inbounds nuw %struct.Piece, ptr %3314, i64 %3340
  %3342 = getelementptr inbounds nuw i8, ptr %3341, i64 2112
  %3343 = load <2 x i64>, ptr %3342, align 16, !tbaa !26
  %3344 = getelementptr inbounds nuw i8, ptr %3341, i64 32
  %3345 = load <2 x double>, ptr %3344, align 16, !tbaa !26
  %3346 = getelementptr inbounds nuw i8, ptr %3341, i64 1680
  %3347 = load <2 x double>, ptr %3346, align 16, !tbaa !26
  %3348 = fmul <2 x double> %3345, %3347
  %3349 = icmp eq <2 x i64> %3343, zeroinitializer
  %3350 = select <2 x i1> %3349, <2 x double> %3348, <2 x double> zeroinitializer
  %3351 = fadd <2 x double> %3334, %3350
  %3352 = getelementptr inbounds nuw i8, ptr %3341, i64 1648
  %3353 = load <2 x double>, ptr %3352, align 16, !tbaa !26
  %3354 = fmul <2 x double> %3345, %3353
  %3355 = select <2 x i1> %3349, <2 x double> %3354, <2 x double> zeroinitializer
  %3356 = fadd <2 x double> %3339, %3355
  %3357 = add nuw nsw i64 %3322, 2
  %3358 = add i64 %3323, 2
  %3359 = icmp eq i64 %3358, %3318
  br i1 %3359, label %3360, label %3319, !llvm.loop !123

3360:                                             ; preds = %3319, %3313
  %3361 = phi <2 x double> [ poison, %3313 ], [ %3351, %3319 ]
  %3362 = phi <2 x double> [ poison, %3313 ], [ %3356, %3319 ]
  %3363 = phi <2 x double> [ zeroinitializer, %3313 ], [ %3351, %3319 ]
  %3364 = phi <2 x double> [ zeroinitializer, %3313 ], [ %3356, %3319 ]
  %3365 = phi i64 [ 0, %3313 ], [ %3357, %3319 ]
  %3366 = icmp eq i64 %3315, 0
  br i1 %3366, label %3384, label %3367

3367:                                             ; preds = %3360
  %3368 = getelementptr inbounds nuw %struct.Piece, ptr %3314, i64 %3365
  %3369 = getelementptr inbounds nuw i8, ptr %3368, i64 2112
  %3370 = load <2 x i64>, ptr %3369, align 16, !tbaa !26
  %3371 = getelementptr inbounds nuw i8, ptr %3368, i64 32
  %3372 = load <2 x double>, ptr %3371, align 16, !tbaa !26
  %3373 = getelementptr inbounds nuw i8, ptr %3368, i64 1680
  %3374 = load <2 x double>, ptr %3373, align 16, !tbaa !26
  %3375 = fmul <2 x double> %3372, %3374
  %3376 = icmp eq <2 x i64> %3370, zeroinitializer
  %3377 = select <2 x i1> %3376, <2 x double> %3375, <2 x double> zeroinitializer
  %3378 = fadd <2 x double> %3363, %3377
  %3379 = getelementptr inbounds nuw i8, ptr %3368, i64 1648
  %3380 = load <2 x double>, ptr %3379, align 16, !tbaa !26
  %3381 = fmul <2 x double> %3372, %3380
  %3382 = select <2 x i1> %3376, <2 x double> %3381, <2 x double> zeroinitializer
  %3383 = fadd <2 x double> %3364, %3382
  br label %3384

3384:                                             ; preds = %3367, %3360, %3307, %3310
  %3385 = phi i1 [ false, %3310 ], [ false, %3307 ], [ true, %3360 ], [ true, %3367 ]
  %3386 = phi <2 x double> [ %3311, %3310 ], [ %3309, %3307 ], [ %3311, %3360 ], [ %3311, %3367 ]
  %3387 = phi i64 [ %3611, %3310 ], [ %3308, %3307 ], [ %3611, %3360 ], [ %3611, %3367 ]
  %3388 = phi <2 x double> [ zeroinitializer, %3310 ], [ zeroinitializer, %3307 ], [ %3362, %3360 ], [ %3383, %3367 ]
  %3389 = phi <2 x double> [ zeroinitializer, %3310 ], [ zeroinitializer, %3307 ], [ %3361, %3360 ], [ %3378, %3367 ]
  %3390 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %3391 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %3392 = fsub <2 x double> %3386, %3391
  %3393 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3390, <2 x double> %3392, <2 x double> %3389)
  %3394 = fadd <2 x double> %3388, %3390
  store <2 x double> %3393, ptr %210, align 16, !tbaa !26
  %3395 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %3396 = fcmp ule <2 x double> %3395, zeroinitializer
  %3397 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %3398 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3395, <2 x double> splat (double 5.000000e-01), <2 x double> %3397)
  %3399 = fsub <2 x double> %3398, %3386
  %3400 = fcmp ogt <2 x double> %3395, splat (double 1.000000e-30)
  %3401 = select <2 x i1> %3400, <2 x double> %3395, <2 x double> splat (double 1.000000e-30)
  %3402 = fdiv <2 x double> %3399, %3401
  %3403 = fcmp ogt <2 x double> %3402, zeroinitializer
  %3404 = select <2 x i1> %3403, <2 x double> %3402, <2 x double> zeroinitializer
  %3405 = fcmp olt <2 x double> %3404, splat (double 1.000000e+00)
  %3406 = select <2 x i1> %3405, <2 x double> %3404, <2 x double> splat (double 1.000000e+00)
  %3407 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %3408 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %3409 = icmp eq <2 x i64> %3408, zeroinitializer
  %3410 = select <2 x i1> %3409, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %3411 = select <2 x i1> %3396, <2 x double> %3410, <2 x double> %3406
  %3412 = fmul <2 x double> %3407, %3411
  %3413 = fcmp ule <2 x double> %3412, zeroinitializer
  %3414 = fcmp uge <2 x double> %3412, %3407
  %3415 = or <2 x i1> %3413, %3414
  %3416 = or <2 x i1> %3396, %3415
  %3417 = fdiv <2 x double> %3407, %3401
  %3418 = select <2 x i1> %3416, <2 x double> zeroinitializer, <2 x double> %3417
  %3419 = fadd <2 x double> %3394, %3418
  %3420 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %3421 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %3422 = fdiv <2 x double> splat (double 2.000000e+00), %3421
  %3423 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %3424 = icmp eq <2 x i64> %3420, zeroinitializer
  %3425 = select <2 x i1> %3424, <2 x double> %3423, <2 x double> %3422
  %3426 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %3427 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %3428 = fmul <2 x double> %3426, %3427
  %3429 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %3430 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %3431 = fmul <2 x double> %3430, splat (double 5.000000e-01)
  %3432 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3431, <2 x double> %3426, <2 x double> %3429)
  %3433 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %3434 = fmul <2 x double> %3426, %3433
  %3435 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3428, <2 x double> %3432, <2 x double> %3434)
  %3436 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %3437 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %3438 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %3439 = fmul <2 x double> %3427, %3438
  %3440 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3431, <2 x double> %3438, <2 x double> %3429)
  %3441 = fmul <2 x double> %3433, %3438
  %3442 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3439, <2 x double> %3440, <2 x double> %3441)
  %3443 = fmul <2 x double> %3437, %3442
  %3444 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3436, <2 x double> %3435, <2 x double> %3443)
  %3445 = fmul <2 x double> %3386, %3427
  %3446 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3431, <2 x double> %3386, <2 x double> %3429)
  %3447 = fmul <2 x double> %3386, %3433
  %3448 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3445, <2 x double> %3446, <2 x double> %3447)
  %3449 = fneg <2 x double> %3425
  %3450 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %3451 = fneg <2 x double> %3450
  %3452 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3449, <2 x double> %3435, <2 x double> %3451)
  %3453 = select <2 x i1> %3424, <2 x double> %3444, <2 x double> %3452
  %3454 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3425, <2 x double> %3448, <2 x double> %3453)
  %3455 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3430, <2 x double> %3386, <2 x double> %3429)
  %3456 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3427, <2 x double> %3455, <2 x double> %3433)
  %3457 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %3458 = fcmp une <2 x double> %3457, zeroinitializer
  %3459 = fadd <2 x double> %3393, %3454
  %3460 = fsub <2 x double> %3459, %3412
  %3461 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3425, <2 x double> %3456, <2 x double> %3419)
  %3462 = fdiv <2 x double> %3460, %3461
  %3463 = fsub <2 x double> %3386, %3462
  %3464 = select <2 x i1> %3458, <2 x double> %3386, <2 x double> %3463
  store <2 x double> %3464, ptr %178, align 16, !tbaa !26
  %3465 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %3466 = fneg <2 x double> %3436
  %3467 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3466, <2 x double> %3465, <2 x double> %3412)
  %3468 = load <2 x double>, ptr %212, align 16, !tbaa !26
  %3469 = fneg <2 x double> %3437
  %3470 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3469, <2 x double> %3468, <2 x double> %3467)
  %3471 = fdiv <2 x double> %3470, %3423
  %3472 = load <2 x double>, ptr %213, align 16, !tbaa !26
  %3473 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3466, <2 x double> %3472, <2 x double> %3393)
  %3474 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %3475 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3469, <2 x double> %3474, <2 x double> %3473)
  %3476 = fdiv <2 x double> %3475, %3423
  %3477 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3412, <2 x double> %3421, <2 x double> %3465)
  %3478 = select <2 x i1> %3424, <2 x double> %3471, <2 x double> %3477
  %3479 = load <2 x double>, ptr %215, align 16, !tbaa !26
  %3480 = select <2 x i1> %3458, <2 x double> %3479, <2 x double> %3478
  store <2 x double> %3480, ptr %215, align 16, !tbaa !26
  %3481 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %3482 = select <2 x i1> %3458, <2 x double> %3481, <2 x double> %3476
  store <2 x double> %3482, ptr %216, align 16, !tbaa !26
  br i1 %3385, label %3613, label %3938

3483:                                             ; preds = %3304, %3587
  %3484 = phi i64 [ %3610, %3587 ], [ 0, %3304 ]
  %3485 = load ptr, ptr %142, align 8, !tbaa !28
  %3486 = getelementptr inbounds nuw %struct.Piece, ptr %3485, i64 %3484
  %3487 = getelementptr inbounds nuw i8, ptr %3486, i64 1488
  %3488 = load <2 x double>, ptr %3487, align 16, !tbaa !26
  %3489 = getelementptr inbounds nuw i8, ptr %3486, i64 1536
  %3490 = load <2 x double>, ptr %3489, align 16, !tbaa !26
  %3491 = getelementptr inbounds nuw i8, ptr %3486, i64 2184
  %3492 = load ptr, ptr %3491, align 8, !tbaa !84
  %3493 = getelementptr inbounds nuw i8, ptr %3486, i64 2192
  %3494 = load ptr, ptr %3493, align 16, !tbaa !85
  %3495 = getelementptr inbounds nuw i8, ptr %3486, i64 2136
  %3496 = load ptr, ptr %3495, align 8, !tbaa !58
  %3497 = load i64, ptr %132, align 16, !tbaa !21
  %3498 = icmp sgt i64 %3497, 0
  br i1 %3498, label %3499, label %3519

3499:                                             ; preds = %3483
  %3500 = and i64 %3497, 1
  %3501 = icmp eq i64 %3500, 0
  br i1 %3501, label %3515, label %3502

3502:                                             ; preds = %3499
  %3503 = add nsw i64 %3497, -1
  %3504 = uitofp nneg i64 %3503 to double
  %3505 = insertelement <2 x double> poison, double %3504, i64 0
  %3506 = shufflevector <2 x double> %3505, <2 x double> poison, <2 x i32> zeroinitializer
  %3507 = fcmp ugt <2 x double> %3490, %3506
  %3508 = getelementptr inbounds nuw <2 x double>, ptr %3492, i64 %3503
  %3509 = load <2 x double>, ptr %3508, align 16, !tbaa !26
  %3510 = getelementptr inbounds nuw <2 x double>, ptr %3494, i64 %3503
  %3511 = load <2 x double>, ptr %3510, align 16, !tbaa !26
  %3512 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3511, <2 x double> %3488, <2 x double> %3509)
  %3513 = select <2 x i1> %3507, <2 x double> %3512, <2 x double> %3488
  %3514 = getelementptr inbounds nuw <2 x double>, ptr %3496, i64 %3503
  store <2 x double> %3513, ptr %3514, align 16, !tbaa !26
  br label %3515

3515:                                             ; preds = %3502, %3499
  %3516 = phi <2 x double> [ %3488, %3499 ], [ %3513, %3502 ]
  %3517 = phi i64 [ %3497, %3499 ], [ %3503, %3502 ]
  %3518 = icmp eq i64 %3497, 1
  br i1 %3518, label %3519, label %3534

3519:                                             ; preds = %3515, %3534, %3483
  %3520 = getelementptr inbounds nuw i8, ptr %3486, i64 2080
  %3521 = load <2 x i64>, ptr %3520, align 16, !tbaa !26
  %3522 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3521)
  %3523 = icmp eq i64 %3522, 0
  %3524 = load i64, ptr %133, align 8, !tbaa !22
  %3525 = icmp sgt i64 %3524, 0
  br i1 %3523, label %3531, label %3526

3526:                                             ; preds = %3519
  br i1 %3525, label %3527, label %3587

3527:                                             ; preds = %3526
  %3528 = getelementptr inbounds nuw i8, ptr %3486, i64 2288
  %3529 = getelementptr inbounds nuw i8, ptr %3486, i64 2296
  %3530 = getelementptr inbounds nuw i8, ptr %3486, i64 2256
  br label %3562

3531:                                             ; preds = %3519
  br i1 %3525, label %3532, label %3587

3532:                                             ; preds = %3531
  %3533 = getelementptr inbounds nuw i8, ptr %3486, i64 2256
  br label %3580

3534:                                             ; preds = %3515, %3534
  %3535 = phi <2 x double> [ %3559, %3534 ], [ %3516, %3515 ]
  %3536 = phi i64 [ %3549, %3534 ], [ %3517, %3515 ]
  %3537 = add nsw i64 %3536, -1
  %3538 = uitofp nneg i64 %3537 to double
  %3539 = insertelement <2 x double> poison, double %3538, i64 0
  %3540 = shufflevector <2 x double> %3539, <2 x double> poison, <2 x i32> zeroinitializer
  %3541 = fcmp ugt <2 x double> %3490, %3540
  %3542 = getelementptr inbounds nuw <2 x double>, ptr %3492, i64 %3537
  %3543 = load <2 x double>, ptr %3542, align 16, !tbaa !26
  %3544 = getelementptr inbounds nuw <2 x double>, ptr %3494, i64 %3537
  %3545 = load <2 x double>, ptr %3544, align 16, !tbaa !26
  %3546 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3545, <2 x double> %3535, <2 x double> %3543)
  %3547 = select <2 x i1> %3541, <2 x double> %3546, <2 x double> %3488
  %3548 = getelementptr inbounds nuw <2 x double>, ptr %3496, i64 %3537
  store <2 x double> %3547, ptr %3548, align 16, !tbaa !26
  %3549 = add nsw i64 %3536, -2
  %3550 = uitofp nneg i64 %3549 to double
  %3551 = insertelement <2 x double> poison, double %3550, i64 0
  %3552 = shufflevector <2 x double> %3551, <2 x double> poison, <2 x i32> zeroinitializer
  %3553 = fcmp ugt <2 x double> %3490, %3552
  %3554 = getelementptr inbounds nuw <2 x double>, ptr %3492, i64 %3549
  %3555 = load <2 x double>, ptr %3554, align 16, !tbaa !26
  %3556 = getelementptr inbounds nuw <2 x double>, ptr %3494, i64 %3549
  %3557 = load <2 x double>, ptr %3556, align 16, !tbaa !26
  %3558 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3557, <2 x double> %3547, <2 x double> %3555)
  %3559 = select <2 x i1> %3553, <2 x double> %3558, <2 x double> %3488
  %3560 = getelementptr inbounds nuw <2 x double>, ptr %3496, i64 %3549
  store <2 x double> %3559, ptr %3560, align 16, !tbaa !26
  %3561 = icmp samesign ugt i64 %3537, 1
  br i1 %3561, label %3534, label %3519, !llvm.loop !124

3562:                                             ; preds = %3527, %3562
  %3563 = phi i64 [ 0, %3527 ], [ %3577, %3562 ]
  %3564 = phi <2 x double> [ %3488, %3527 ], [ %3574, %3562 ]
  %3565 = load <2 x i64>, ptr %3520, align 16, !tbaa !26
  %3566 = load ptr, ptr %3528, align 16, !tbaa !90
  %3567 = getelementptr inbounds nuw <2 x double>, ptr %3566, i64 %3563
  %3568 = load <2 x double>, ptr %3567, align 16, !tbaa !26
  %3569 = load ptr, ptr %3529, align 8, !tbaa !91
  %3570 = getelementptr inbounds nuw <2 x double>, ptr %3569, i64 %3563
  %3571 = load <2 x double>, ptr %3570, align 16, !tbaa !26
  %3572 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3571, <2 x double> %3564, <2 x double> %3568)
  %3573 = icmp eq <2 x i64> %3565, zeroinitializer
  %3574 = select <2 x i1> %3573, <2 x double> %3488, <2 x double> %3572
  %3575 = load ptr, ptr %3530, align 16, !tbaa !125
  %3576 = getelementptr inbounds nuw <2 x double>, ptr %3575, i64 %3563
  store <2 x double> %3574, ptr %3576, align 16, !tbaa !26
  %3577 = add nuw nsw i64 %3563, 1
  %3578 = load i64, ptr %133, align 8, !tbaa !22
  %3579 = icmp slt i64 %3577, %3578
  br i1 %3579, label %3562, label %3587, !llvm.loop !126

3580:                                             ; preds = %3532, %3580
  %3581 = phi i64 [ 0, %3532 ], [ %3584, %3580 ]
  %3582 = load ptr, ptr %3533, align 16, !tbaa !125
  %3583 = getelementptr inbounds nuw <2 x double>, ptr %3582, i64 %3581
  store <2 x double> %3488, ptr %3583, align 16, !tbaa !26
  %3584 = add nuw nsw i64 %3581, 1
  %3585 = load i64, ptr %133, align 8, !tbaa !22
  %3586 = icmp slt i64 %3584, %3585
  br i1 %3586, label %3580, label %3587, !llvm.loop !127

3587:                                             ; preds = %3562, %3580, %3526, %3531
  %3588 = phi <2 x double> [ %3488, %3531 ], [ %3488, %3526 ], [ %3488, %3580 ], [ %3574, %3562 ]
  %3589 = load <2 x i64>, ptr %3520, align 16, !tbaa !26
  %3590 = getelementptr inbounds nuw i8, ptr %3486, i64 1664
  %3591 = load <2 x double>, ptr %3590, align 16, !tbaa !26
  %3592 = icmp eq <2 x i64> %3589, zeroinitializer
  %3593 = select <2 x i1> %3592, <2 x double> zeroinitializer, <2 x double> %3591
  %3594 = fsub <2 x double> splat (double 1.000000e+00), %3593
  %3595 = getelementptr inbounds nuw i8, ptr %3486, i64 1472
  %3596 = load <2 x double>, ptr %3595, align 16, !tbaa !26
  %3597 = fmul <2 x double> %3593, %3596
  %3598 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3594, <2 x double> %3588, <2 x double> %3597)
  %3599 = getelementptr inbounds nuw i8, ptr %3486, i64 1712
  store <2 x double> %3598, ptr %3599, align 16, !tbaa !26
  %3600 = getelementptr inbounds nuw i8, ptr %3486, i64 1648
  %3601 = load <2 x double>, ptr %3600, align 16, !tbaa !26
  %3602 = fsub <2 x double> %3596, %3588
  %3603 = fmul <2 x double> %3602, %3601
  %3604 = getelementptr inbounds nuw i8, ptr %3486, i64 1680
  store <2 x double> %3603, ptr %3604, align 16, !tbaa !26
  %3605 = getelementptr inbounds nuw i8, ptr %3486, i64 800
  %3606 = load <2 x double>, ptr %3605, align 16, !tbaa !26
  %3607 = fdiv <2 x double> %3603, %3606
  %3608 = fsub <2 x double> %3596, %3607
  %3609 = getelementptr inbounds nuw i8, ptr %3486, i64 1696
  store <2 x double> %3608, ptr %3609, align 16, !tbaa !26
  %3610 = add nuw nsw i64 %3484, 1
  %3611 = load i64, ptr %169, align 8, !tbaa !20
  %3612 = icmp slt i64 %3610, %3611
  br i1 %3612, label %3483, label %3310, !llvm.loop !128

3613:                                             ; preds = %3384, %3872
  %3614 = phi i64 [ %3935, %3872 ], [ 0, %3384 ]
  %3615 = phi <2 x double> [ %3934, %3872 ], [ zeroinitializer, %3384 ]
  %3616 = load ptr, ptr %142, align 8, !tbaa !28
  %3617 = getelementptr inbounds nuw %struct.Piece, ptr %3616, i64 %3614
  %3618 = getelementptr inbounds nuw i8, ptr %3617, i64 1504
  %3619 = load <2 x double>, ptr %3618, align 16, !tbaa !26
  %3620 = getelementptr inbounds nuw i8, ptr %3617, i64 1520
  %3621 = load <2 x double>, ptr %3620, align 16, !tbaa !26
  %3622 = fadd <2 x double> %3619, %3621
  %3623 = getelementptr inbounds nuw i8, ptr %3617, i64 1488
  %3624 = load <2 x double>, ptr %3623, align 16, !tbaa !26
  %3625 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %3626 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3625, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3627 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3625, <2 x double> %3626, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3628 = getelementptr inbounds nuw i8, ptr %3617, i64 1792
  %3629 = load <2 x double>, ptr %3628, align 16, !tbaa !26
  %3630 = getelementptr inbounds nuw i8, ptr %3617, i64 320
  %3631 = load <2 x double>, ptr %3630, align 16, !tbaa !26
  %3632 = fmul <2 x double> %3629, %3631
  %3633 = getelementptr inbounds nuw i8, ptr %3617, i64 1712
  %3634 = load <2 x double>, ptr %3633, align 16, !tbaa !26
  %3635 = fsub <2 x double> %3634, %3624
  %3636 = fmul <2 x double> %3632, %3635
  %3637 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3627, <2 x double> %3622, <2 x double> %3636)
  %3638 = getelementptr inbounds nuw i8, ptr %3617, i64 1424
  %3639 = load <2 x double>, ptr %3638, align 16, !tbaa !26, !noalias !129
  %3640 = getelementptr inbounds nuw i8, ptr %3617, i64 1040
  %3641 = load <2 x double>, ptr %3640, align 16, !tbaa !26, !noalias !129
  %3642 = fneg <2 x double> %3639
  %3643 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3642, <2 x double> %3641, <2 x double> %3622)
  %3644 = getelementptr inbounds nuw i8, ptr %3617, i64 1440
  %3645 = load <2 x double>, ptr %3644, align 16, !tbaa !26, !noalias !129
  %3646 = getelementptr inbounds nuw i8, ptr %3617, i64 1264
  %3647 = load <2 x double>, ptr %3646, align 16, !tbaa !26, !noalias !129
  %3648 = fneg <2 x double> %3645
  %3649 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3648, <2 x double> %3647, <2 x double> %3643)
  %3650 = getelementptr inbounds nuw i8, ptr %3617, i64 1408
  %3651 = load <2 x double>, ptr %3650, align 16, !tbaa !26, !noalias !129
  %3652 = fdiv <2 x double> %3649, %3651
  %3653 = getelementptr inbounds nuw i8, ptr %3617, i64 400
  %3654 = load <2 x double>, ptr %3653, align 16, !tbaa !26, !noalias !129
  %3655 = fsub <2 x double> %3654, %3652
  %3656 = getelementptr inbounds nuw i8, ptr %3617, i64 1008
  %3657 = load <2 x double>, ptr %3656, align 16, !tbaa !26, !noalias !129
  %3658 = getelementptr inbounds nuw i8, ptr %3617, i64 1888
  %3659 = load <2 x double>, ptr %3658, align 16, !tbaa !26, !noalias !129
  %3660 = fsub <2 x double> %3657, %3659
  %3661 = getelementptr inbounds nuw i8, ptr %3617, i64 976
  %3662 = load <2 x double>, ptr %3661, align 16, !tbaa !26, !noalias !129
  %3663 = getelementptr inbounds nuw i8, ptr %3617, i64 736
  %3664 = load <2 x double>, ptr %3663, align 16, !tbaa !26, !noalias !129
  %3665 = getelementptr inbounds nuw i8, ptr %3617, i64 2080
  %3666 = load <2 x i64>, ptr %3665, align 16, !tbaa !26, !noalias !129
  %3667 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3666)
  %3668 = icmp eq i64 %3667, 0
  br i1 %3668, label %3834, label %3669

3669:                                             ; preds = %3613
  %3670 = fcmp ogt <2 x double> %3660, %3655
  %3671 = getelementptr inbounds nuw i8, ptr %3617, i64 1920
  %3672 = load <2 x double>, ptr %3671, align 16, !tbaa !26, !noalias !129
  %3673 = fcmp oeq <2 x double> %3672, zeroinitializer
  %3674 = select <2 x i1> %3673, <2 x i1> %3670, <2 x i1> zeroinitializer
  %3675 = select <2 x i1> %3674, <2 x i64> %3666, <2 x i64> zeroinitializer
  %3676 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3675)
  %3677 = icmp eq i64 %3676, 0
  br i1 %3677, label %3750, label %3678

3678:                                             ; preds = %3669
  %3679 = fsub <2 x double> %3660, %3655
  %3680 = getelementptr inbounds nuw i8, ptr %3617, i64 208
  %3681 = load <2 x double>, ptr %3680, align 16, !tbaa !26, !noalias !129
  %3682 = fdiv <2 x double> %3679, %3681
  %3683 = getelementptr inbounds nuw i8, ptr %3617, i64 2168
  %3684 = load ptr, ptr %3683, align 8, !tbaa !68, !noalias !129
  %3685 = load i64, ptr %132, align 16, !tbaa !21, !noalias !129
  %3686 = add nsw i64 %3685, -1
  %3687 = getelementptr inbounds <2 x double>, ptr %3684, i64 %3686
  %3688 = load <2 x double>, ptr %3687, align 16, !tbaa !26, !noalias !129
  %3689 = icmp sgt i64 %3685, 1
  br i1 %3689, label %3690, label %3742

3690:                                             ; preds = %3678
  %3691 = getelementptr inbounds nuw i8, ptr %3617, i64 2128
  %3692 = load i64, ptr %3691, align 16, !tbaa !31, !noalias !129
  %3693 = getelementptr inbounds nuw i8, ptr %3617, i64 1168
  %3694 = getelementptr inbounds nuw i8, ptr %3617, i64 384
  %3695 = getelementptr inbounds nuw i8, ptr %3617, i64 2224
  br label %3696

3696:                                             ; preds = %3690, %3739
  %3697 = phi <2 x double> [ %3662, %3690 ], [ %3734, %3739 ]
  %3698 = phi i64 [ %3686, %3690 ], [ %3740, %3739 ]
  %3699 = phi <2 x double> [ %3688, %3690 ], [ %3722, %3739 ]
  %3700 = phi <2 x i64> [ %3675, %3690 ], [ %3726, %3739 ]
  %3701 = phi <2 x double> [ %3682, %3690 ], [ %3733, %3739 ]
  %3702 = icmp slt i64 %3698, %3692
  br i1 %3702, label %3703, label %3709

3703:                                             ; preds = %3696
  %3704 = load ptr, ptr %3695, align 16, !tbaa !73, !noalias !129
  %3705 = getelementptr inbounds nuw <2 x double>, ptr %3704, i64 %3698
  %3706 = load <2 x double>, ptr %3705, align 16, !tbaa !26, !noalias !129
  %3707 = load <2 x double>, ptr %3694, align 16, !tbaa !26, !noalias !129
  %3708 = fmul <2 x double> %3706, %3707
  br label %3717

3709:                                             ; preds = %3696
  %3710 = load <2 x double>, ptr %3693, align 16, !tbaa !26, !noalias !129
  %3711 = load <2 x double>, ptr %3694, align 16, !tbaa !26, !noalias !129
  %3712 = load ptr, ptr %3695, align 16, !tbaa !73, !noalias !129
  %3713 = getelementptr inbounds nuw <2 x double>, ptr %3712, i64 %3698
  %3714 = load <2 x double>, ptr %3713, align 16, !tbaa !26, !noalias !129
  %3715 = fsub <2 x double> %3710, %3711
  %3716 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3714, <2 x double> %3715, <2 x double> %3711)
  br label %3717

3717:                                             ; preds = %3709, %3703
  %3718 = phi <2 x double> [ %3708, %3703 ], [ %3716, %3709 ]
  %3719 = getelementptr inbounds nuw <2 x double>, ptr %3684, i64 %3698
  %3720 = load <2 x double>, ptr %3719, align 16, !tbaa !26, !noalias !129
  %3721 = icmp eq <2 x i64> %3700, zeroinitializer
  %3722 = select <2 x i1> %3721, <2 x double> %3699, <2 x double> %3720
  %3723 = fsub <2 x double> %3697, %3718
  %3724 = fmul <2 x double> %3723, %3722
  %3725 = fcmp olt <2 x double> %3724, %3701
  %3726 = select <2 x i1> %3725, <2 x i64> %3700, <2 x i64> zeroinitializer
  %3727 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3726)
  %3728 = icmp eq i64 %3727, 0
  br i1 %3728, label %3742, label %3729

3729:                                             ; preds = %3717
  %3730 = fneg <2 x double> %3722
  %3731 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3730, <2 x double> %3723, <2 x double> %3701)
  %3732 = icmp eq <2 x i64> %3726, zeroinitializer
  %3733 = select <2 x i1> %3732, <2 x double> %3701, <2 x double> %3731
  %3734 = select <2 x i1> %3732, <2 x double> %3697, <2 x double> %3718
  %3735 = icmp eq i64 %3698, 1
  br i1 %3735, label %3736, label %3739

3736:                                             ; preds = %3729
  %3737 = load <2 x double>, ptr %3684, align 16, !tbaa !26, !noalias !129
  %3738 = select <2 x i1> %3732, <2 x double> %3722, <2 x double> %3737
  br label %3742

3739:                                             ; preds = %3729
  %3740 = add nsw i64 %3698, -1
  %3741 = icmp sgt i64 %3698, 1
  br i1 %3741, label %3696, label %3742, !llvm.loop !74

3742:                                             ; preds = %3739, %3717, %3736, %3678
  %3743 = phi <2 x double> [ %3682, %3678 ], [ %3733, %3736 ], [ %3701, %3717 ], [ %3733, %3739 ]
  %3744 = phi <2 x double> [ %3662, %3678 ], [ %3734, %3736 ], [ %3697, %3717 ], [ %3734, %3739 ]
  %3745 = phi <2 x double> [ %3688, %3678 ], [ %3738, %3736 ], [ %3722, %3717 ], [ %3722, %3739 ]
  %3746 = fdiv <2 x double> %3743, %3745
  %3747 = fsub <2 x double> %3744, %3746
  %3748 = icmp eq <2 x i64> %3675, zeroinitializer
  %3749 = select <2 x i1> %3748, <2 x double> %3662, <2 x double> %3747
  br label %3750

3750:                                             ; preds = %3742, %3669
  %3751 = phi <2 x double> [ %3749, %3742 ], [ %3662, %3669 ]
  %3752 = getelementptr inbounds nuw i8, ptr %3617, i64 640
  %3753 = load <2 x double>, ptr %3752, align 16, !tbaa !26, !noalias !129
  %3754 = getelementptr inbounds nuw i8, ptr %3617, i64 656
  %3755 = load <2 x double>, ptr %3754, align 16, !tbaa !26, !noalias !129
  %3756 = getelementptr inbounds nuw i8, ptr %3617, i64 672
  %3757 = load <2 x double>, ptr %3756, align 16, !tbaa !26, !noalias !129
  %3758 = getelementptr inbounds nuw i8, ptr %3617, i64 688
  %3759 = load <2 x double>, ptr %3758, align 16, !tbaa !26, !noalias !129
  %3760 = load <2 x double>, ptr %3617, align 16, !tbaa !26, !noalias !129
  %3761 = fmul <2 x double> %3760, splat (double 2.000000e-05)
  %3762 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3664, <2 x double> %3759, <2 x double> %3757)
  %3763 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3664, <2 x double> %3762, <2 x double> %3755)
  %3764 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3664, <2 x double> %3763, <2 x double> %3753)
  %3765 = fsub <2 x double> %3764, %3751
  %3766 = fmul <2 x double> %3664, splat (double 3.000000e+00)
  %3767 = fmul <2 x double> %3766, %3759
  %3768 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3757, <2 x double> splat (double 2.000000e+00), <2 x double> %3767)
  %3769 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3664, <2 x double> %3768, <2 x double> %3755)
  %3770 = fdiv <2 x double> %3765, %3769
  %3771 = fsub <2 x double> %3664, %3770
  %3772 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3770)
  %3773 = fcmp oge <2 x double> %3772, %3761
  %3774 = bitcast <2 x i1> %3773 to i2
  %3775 = icmp eq i2 %3774, 0
  br i1 %3775, label %3822, label %3776, !llvm.loop !75

3776:                                             ; preds = %3750
  %3777 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3771, <2 x double> %3759, <2 x double> %3757)
  %3778 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3771, <2 x double> %3777, <2 x double> %3755)
  %3779 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3771, <2 x double> %3778, <2 x double> %3753)
  %3780 = fsub <2 x double> %3779, %3751
  %3781 = fmul <2 x double> %3771, splat (double 3.000000e+00)
  %3782 = fmul <2 x double> %3781, %3759
  %3783 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3757, <2 x double> splat (double 2.000000e+00), <2 x double> %3782)
  %3784 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3771, <2 x double> %3783, <2 x double> %3755)
  %3785 = fdiv <2 x double> %3780, %3784
  %3786 = fsub <2 x double> %3771, %3785
  %3787 = select <2 x i1> %3773, <2 x double> %3786, <2 x double> %3771
  %3788 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3785)
  %3789 = fcmp oge <2 x double> %3788, %3761
  %3790 = and <2 x i1> %3789, %3773
  %3791 = bitcast <2 x i1> %3790 to i2
  %3792 = icmp eq i2 %3791, 0
  br i1 %3792, label %3822, label %3793, !llvm.loop !75

3793:                                             ; preds = %3776
  %3794 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3787, <2 x double> %3759, <2 x double> %3757)
  %3795 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3787, <2 x double> %3794, <2 x double> %3755)
  %3796 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3787, <2 x double> %3795, <2 x double> %3753)
  %3797 = fsub <2 x double> %3796, %3751
  %3798 = fmul <2 x double> %3787, splat (double 3.000000e+00)
  %3799 = fmul <2 x double> %3798, %3759
  %3800 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3757, <2 x double> splat (double 2.000000e+00), <2 x double> %3799)
  %3801 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3787, <2 x double> %3800, <2 x double> %3755)
  %3802 = fdiv <2 x double> %3797, %3801
  %3803 = fsub <2 x double> %3787, %3802
  %3804 = select <2 x i1> %3790, <2 x double> %3803, <2 x double> %3787
  %3805 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3802)
  %3806 = fcmp oge <2 x double> %3805, %3761
  %3807 = and <2 x i1> %3806, %3790
  %3808 = bitcast <2 x i1> %3807 to i2
  %3809 = icmp eq i2 %3808, 0
  br i1 %3809, label %3822, label %3810, !llvm.loop !75

3810:                                             ; preds = %3793
  %3811 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3804, <2 x double> %3759, <2 x double> %3757)
  %3812 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3804, <2 x double> %3811, <2 x double> %3755)
  %3813 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3804, <2 x double> %3812, <2 x double> %3753)
  %3814 = fsub <2 x double> %3813, %3751
  %3815 = fmul <2 x double> %3804, splat (double 3.000000e+00)
  %3816 = fmul <2 x double> %3815, %3759
  %3817 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3757, <2 x double> splat (double 2.000000e+00), <2 x double> %3816)
  %3818 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3804, <2 x double> %3817, <2 x double> %3755)
  %3819 = fdiv <2 x double> %3814, %3818
  %3820 = fsub <2 x double> %3804, %3819
  %3821 = select <2 x i1> %3807, <2 x double> %3820, <2 x double> %3804
  br label %3822

3822:                                             ; preds = %3810, %3793, %3776, %3750
  %3823 = phi <2 x double> [ %3771, %3750 ], [ %3787, %3776 ], [ %3804, %3793 ], [ %3821, %3810 ]
  %3824 = fmul <2 x double> %3760, splat (double 2.800000e-01)
  %3825 = fcmp ogt <2 x double> %3823, %3824
  %3826 = select <2 x i1> %3825, <2 x double> %3823, <2 x double> %3824
  %3827 = fcmp olt <2 x double> %3826, %3760
  %3828 = select <2 x i1> %3827, <2 x double> %3826, <2 x double> %3760
  %3829 = icmp eq <2 x i64> %3666, zeroinitializer
  %3830 = select <2 x i1> %3829, <2 x double> %3664, <2 x double> %3828
  %3831 = fcmp olt <2 x double> %3660, %3655
  %3832 = select <2 x i1> %3829, <2 x i1> splat (i1 true), <2 x i1> %3831
  %3833 = select <2 x i1> %3832, <2 x double> %3660, <2 x double> %3655
  br label %3834

3834:                                             ; preds = %3822, %3613
  %3835 = phi <2 x double> [ %3833, %3822 ], [ %3660, %3613 ]
  %3836 = phi <2 x double> [ %3830, %3822 ], [ %3664, %3613 ]
  %3837 = phi <2 x double> [ %3751, %3822 ], [ %3662, %3613 ]
  %3838 = fsub <2 x double> %3655, %3835
  %3839 = fsub <2 x double> %3836, %3664
  %3840 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3839)
  %3841 = getelementptr inbounds nuw i8, ptr %3617, i64 768
  %3842 = load <2 x double>, ptr %3841, align 16, !tbaa !26
  %3843 = fsub <2 x double> %3838, %3842
  %3844 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3843)
  %3845 = getelementptr inbounds nuw i8, ptr %3617, i64 208
  %3846 = load <2 x double>, ptr %3845, align 16, !tbaa !26
  %3847 = fdiv <2 x double> %3844, %3846
  %3848 = icmp eq <2 x i64> %3666, zeroinitializer
  %3849 = select <2 x i1> %3848, <2 x double> %3847, <2 x double> %3840
  br i1 %3668, label %3872, label %3850

3850:                                             ; preds = %3834
  %3851 = getelementptr inbounds nuw i8, ptr %3617, i64 1776
  %3852 = load <2 x double>, ptr %3851, align 16, !tbaa !26
  %3853 = fmul <2 x double> %3852, splat (double 2.000000e+00)
  %3854 = getelementptr inbounds nuw i8, ptr %3617, i64 96
  %3855 = load <2 x double>, ptr %3854, align 16, !tbaa !26
  %3856 = getelementptr inbounds nuw i8, ptr %3617, i64 112
  %3857 = load <2 x double>, ptr %3856, align 16, !tbaa !26
  %3858 = getelementptr inbounds nuw i8, ptr %3617, i64 128
  %3859 = load <2 x double>, ptr %3858, align 16, !tbaa !26
  %3860 = fmul <2 x double> %3624, %3859
  %3861 = fmul <2 x double> %3860, splat (double 0x3FD5555555555555)
  %3862 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3857, <2 x double> splat (double 5.000000e-01), <2 x double> %3861)
  %3863 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3624, <2 x double> %3862, <2 x double> %3855)
  %3864 = fmul <2 x double> %3624, %3863
  %3865 = getelementptr inbounds nuw i8, ptr %3617, i64 192
  %3866 = load <2 x double>, ptr %3865, align 16, !tbaa !26
  %3867 = fneg <2 x double> %3866
  %3868 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3867, <2 x double> %3624, <2 x double> %3864)
  %3869 = fmul <2 x double> %3853, %3868
  %3870 = fsub <2 x double> %3637, %3869
  %3871 = select <2 x i1> %3848, <2 x double> %3637, <2 x double> %3870
  br label %3872

3872:                                             ; preds = %3834, %3850
  %3873 = phi <2 x double> [ %3871, %3850 ], [ %3637, %3834 ]
  %3874 = getelementptr inbounds nuw i8, ptr %3617, i64 816
  store <2 x double> %3652, ptr %3874, align 16, !tbaa !26
  store <2 x double> %3838, ptr %3841, align 16, !tbaa !26
  %3875 = getelementptr inbounds nuw i8, ptr %3617, i64 784
  store <2 x double> %3835, ptr %3875, align 16, !tbaa !26
  %3876 = getelementptr inbounds nuw i8, ptr %3617, i64 752
  %3877 = load <2 x double>, ptr %3876, align 16, !tbaa !26
  %3878 = select <2 x i1> %3848, <2 x double> %3877, <2 x double> %3837
  store <2 x double> %3878, ptr %3876, align 16, !tbaa !26
  %3879 = select <2 x i1> %3848, <2 x double> %3664, <2 x double> %3836
  store <2 x double> %3879, ptr %3663, align 16, !tbaa !26
  %3880 = getelementptr inbounds nuw i8, ptr %3617, i64 880
  store <2 x double> %3621, ptr %3880, align 16, !tbaa !26
  %3881 = getelementptr inbounds nuw i8, ptr %3617, i64 896
  store <2 x double> %3624, ptr %3881, align 16, !tbaa !26
  %3882 = getelementptr inbounds nuw i8, ptr %3617, i64 800
  %3883 = load <2 x double>, ptr %3882, align 16, !tbaa !26
  %3884 = getelementptr inbounds nuw i8, ptr %3617, i64 1472
  %3885 = load <2 x double>, ptr %3884, align 16, !tbaa !26
  %3886 = fsub <2 x double> %3885, %3624
  %3887 = getelementptr inbounds nuw i8, ptr %3617, i64 2064
  %3888 = load <2 x double>, ptr %3887, align 16, !tbaa !26
  %3889 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3883, <2 x double> %3888, <2 x double> splat (double 1.000000e+00))
  %3890 = fdiv <2 x double> %3886, %3889
  %3891 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3624, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3892 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3624, <2 x double> %3891, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3893 = fneg <2 x double> %3619
  %3894 = fmul <2 x double> %3892, %3893
  %3895 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3883, <2 x double> %3890, <2 x double> %3894)
  %3896 = getelementptr inbounds nuw i8, ptr %3617, i64 864
  store <2 x double> %3895, ptr %3896, align 16, !tbaa !26
  %3897 = getelementptr inbounds nuw i8, ptr %3617, i64 1696
  %3898 = load <2 x double>, ptr %3897, align 16, !tbaa !26
  %3899 = fsub <2 x double> %3885, %3898
  %3900 = fsub <2 x double> %3899, %3890
  %3901 = getelementptr inbounds nuw i8, ptr %3617, i64 912
  store <2 x double> %3900, ptr %3901, align 16, !tbaa !26
  %3902 = getelementptr inbounds nuw i8, ptr %3617, i64 1840
  %3903 = load <2 x double>, ptr %3902, align 16, !tbaa !26
  %3904 = getelementptr inbounds nuw i8, ptr %3617, i64 1856
  %3905 = load <2 x double>, ptr %3904, align 16, !tbaa !26
  %3906 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3903, <2 x double> %3624, <2 x double> %3905)
  %3907 = getelementptr inbounds nuw i8, ptr %3617, i64 1680
  %3908 = load <2 x double>, ptr %3907, align 16, !tbaa !26
  %3909 = getelementptr inbounds nuw i8, ptr %3617, i64 1056
  %3910 = load <2 x double>, ptr %3909, align 16, !tbaa !26
  %3911 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3642, <2 x double> %3910, <2 x double> %3908)
  %3912 = getelementptr inbounds nuw i8, ptr %3617, i64 1280
  %3913 = load <2 x double>, ptr %3912, align 16, !tbaa !26
  %3914 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3648, <2 x double> %3913, <2 x double> %3911)
  %3915 = fdiv <2 x double> %3914, %3651
  %3916 = getelementptr inbounds nuw i8, ptr %3617, i64 832
  store <2 x double> %3915, ptr %3916, align 16, !tbaa !26
  %3917 = getelementptr inbounds nuw i8, ptr %3617, i64 1072
  %3918 = load <2 x double>, ptr %3917, align 16, !tbaa !26
  %3919 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3642, <2 x double> %3918, <2 x double> %3873)
  %3920 = getelementptr inbounds nuw i8, ptr %3617, i64 1296
  %3921 = load <2 x double>, ptr %3920, align 16, !tbaa !26
  %3922 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3648, <2 x double> %3921, <2 x double> %3919)
  %3923 = fdiv <2 x double> %3922, %3651
  %3924 = getelementptr inbounds nuw i8, ptr %3617, i64 848
  store <2 x double> %3923, ptr %3924, align 16, !tbaa !26
  %3925 = getelementptr inbounds nuw i8, ptr %3617, i64 1152
  %3926 = load <2 x double>, ptr %3925, align 16, !tbaa !26
  %3927 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3642, <2 x double> %3926, <2 x double> %3906)
  %3928 = getelementptr inbounds nuw i8, ptr %3617, i64 1376
  %3929 = load <2 x double>, ptr %3928, align 16, !tbaa !26
  %3930 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3648, <2 x double> %3929, <2 x double> %3927)
  %3931 = fdiv <2 x double> %3930, %3651
  %3932 = getelementptr inbounds nuw i8, ptr %3617, i64 928
  store <2 x double> %3931, ptr %3932, align 16, !tbaa !26
  %3933 = fcmp ogt <2 x double> %3615, %3849
  %3934 = select <2 x i1> %3933, <2 x double> %3615, <2 x double> %3849
  %3935 = add nuw nsw i64 %3614, 1
  %3936 = load i64, ptr %169, align 8, !tbaa !20
  %3937 = icmp slt i64 %3935, %3936
  br i1 %3937, label %3613, label %3938, !llvm.loop !132

3938:                                             ; preds = %3872, %3384
  %3939 = phi <2 x double> [ zeroinitializer, %3384 ], [ %3934, %3872 ]
  %3940 = phi i64 [ %3387, %3384 ], [ %3936, %3872 ]
  %3941 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %3942 = fadd <2 x double> %3941, splat (double 1.000000e+00)
  store <2 x double> %3942, ptr %182, align 16, !tbaa !26
  %3943 = icmp sgt i64 %3940, 0
  br i1 %3943, label %3944, label %3950

3944:                                             ; preds = %3938
  %3945 = load ptr, ptr %142, align 8, !tbaa !28
  %3946 = load i64, ptr %132, align 16, !tbaa !21
  %3947 = add nsw i64 %3946, -1
  br label %3972

3948:                                             ; preds = %3998
  %3949 = fcmp oeq <2 x double> %4013, zeroinitializer
  br label %3950

3950:                                             ; preds = %3948, %3938
  %3951 = phi <2 x i1> [ splat (i1 true), %3938 ], [ %3949, %3948 ]
  %3952 = load i64, ptr %217, align 16, !tbaa !24
  %3953 = sitofp i64 %3952 to double
  %3954 = insertelement <2 x double> poison, double %3953, i64 0
  %3955 = shufflevector <2 x double> %3954, <2 x double> poison, <2 x i32> zeroinitializer
  %3956 = fcmp oge <2 x double> %3942, %3955
  %3957 = and <2 x i1> %3951, %3956
  %3958 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %3959 = load <2 x double>, ptr %218, align 16, !tbaa !26
  %3960 = fcmp olt <2 x double> %3939, %3959
  %3961 = or <2 x i1> %3960, %3957
  %3962 = fcmp oge <2 x double> %3942, splat (double 2.000000e+01)
  %3963 = or <2 x i1> %3962, %3961
  %3964 = select <2 x i1> %3963, <2 x i64> %3958, <2 x i64> zeroinitializer
  store <2 x i64> %3964, ptr %146, align 16, !tbaa !26
  %3965 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3964)
  %3966 = icmp eq i64 %3965, 0
  br i1 %3966, label %527, label %3967, !llvm.loop !55

3967:                                             ; preds = %3950
  %3968 = load i64, ptr %169, align 8, !tbaa !20
  %3969 = icmp sgt i64 %3968, 0
  br i1 %3969, label %3970, label %4016

3970:                                             ; preds = %3967
  %3971 = icmp eq <2 x i64> %3964, zeroinitializer
  br label %4337

3972:                                             ; preds = %3944, %3998
  %3973 = phi i64 [ 0, %3944 ], [ %4014, %3998 ]
  %3974 = phi <2 x double> [ zeroinitializer, %3944 ], [ %4013, %3998 ]
  %3975 = getelementptr inbounds nuw %struct.Piece, ptr %3945, i64 %3973
  %3976 = getelementptr inbounds nuw i8, ptr %3975, i64 2128
  %3977 = load i64, ptr %3976, align 16, !tbaa !31
  %3978 = icmp sgt i64 %3946, %3977
  br i1 %3978, label %3987, label %3979

3979:                                             ; preds = %3972
  %3980 = getelementptr inbounds nuw i8, ptr %3975, i64 2224
  %3981 = load ptr, ptr %3980, align 16, !tbaa !73
  %3982 = getelementptr inbounds <2 x double>, ptr %3981, i64 %3947
  %3983 = load <2 x double>, ptr %3982, align 16, !tbaa !26
  %3984 = getelementptr inbounds nuw i8, ptr %3975, i64 384
  %3985 = load <2 x double>, ptr %3984, align 16, !tbaa !26
  %3986 = fmul <2 x double> %3983, %3985
  br label %3998

3987:                                             ; preds = %3972
  %3988 = getelementptr inbounds nuw i8, ptr %3975, i64 944
  %3989 = load <2 x double>, ptr %3988, align 16, !tbaa !26
  %3990 = getelementptr inbounds nuw i8, ptr %3975, i64 384
  %3991 = load <2 x double>, ptr %3990, align 16, !tbaa !26
  %3992 = getelementptr inbounds nuw i8, ptr %3975, i64 2224
  %3993 = load ptr, ptr %3992, align 16, !tbaa !73
  %3994 = getelementptr inbounds <2 x double>, ptr %3993, i64 %3947
  %3995 = load <2 x double>, ptr %3994, align 16, !tbaa !26
  %3996 = fsub <2 x double> %3989, %3991
  %3997 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3995, <2 x double> %3996, <2 x double> %3991)
  br label %3998

3998:                                             ; preds = %3979, %3987
  %3999 = phi <2 x double> [ %3986, %3979 ], [ %3997, %3987 ]
  %4000 = getelementptr inbounds nuw i8, ptr %3975, i64 2080
  %4001 = load <2 x i64>, ptr %4000, align 16, !tbaa !26
  %4002 = getelementptr inbounds nuw i8, ptr %3975, i64 1920
  %4003 = load <2 x double>, ptr %4002, align 16, !tbaa !26
  %4004 = fcmp une <2 x double> %4003, zeroinitializer
  %4005 = getelementptr inbounds nuw i8, ptr %3975, i64 752
  %4006 = load <2 x double>, ptr %4005, align 16, !tbaa !26
  %4007 = fcmp uge <2 x double> %4006, %3999
  %4008 = select <2 x i1> %4007, <2 x i1> splat (i1 true), <2 x i1> %4004
  %4009 = icmp eq <2 x i64> %4001, zeroinitializer
  %4010 = select <2 x i1> %4008, <2 x i1> splat (i1 true), <2 x i1> %4009
  %4011 = select <2 x i1> %4010, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %4012 = fcmp ogt <2 x double> %3974, %4011
  %4013 = select <2 x i1> %4012, <2 x double> %3974, <2 x double> %4011
  %4014 = add nuw nsw i64 %3973, 1
  %4015 = icmp eq i64 %4014, %3940
  br i1 %4015, label %3948, label %3972, !llvm.loop !133

4016:                                             ; preds = %4385, %3967
  %4017 = phi i64 [ %3968, %3967 ], [ %4391, %4385 ]
  %4018 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4019 = fadd <2 x double> %4018, splat (double 1.000000e+00)
  %4020 = icmp eq <2 x i64> %3964, zeroinitializer
  %4021 = select <2 x i1> %4020, <2 x double> %4018, <2 x double> %4019
  store <2 x double> %4021, ptr %174, align 16, !tbaa !26
  %4022 = fcmp ogt <2 x double> %4021, splat (double 4.000000e+01)
  %4023 = select <2 x i1> %4022, <2 x i64> %3964, <2 x i64> zeroinitializer
  %4024 = xor <2 x i64> %4023, %3964
  %4025 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %4026 = fadd <2 x double> %4025, splat (double 1.000000e+00)
  %4027 = icmp eq <2 x i64> %4023, zeroinitializer
  %4028 = select <2 x i1> %4027, <2 x double> %4025, <2 x double> %4026
  store <2 x double> %4028, ptr %140, align 16, !tbaa !26
  %4029 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %4030 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %4031 = fsub <2 x double> %4029, %4030
  %4032 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4031)
  %4033 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4034 = fmul <2 x double> %4033, splat (double 1.500000e+00)
  %4035 = fcmp ogt <2 x double> %4032, %4034
  %4036 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4037 = fcmp ogt <2 x double> %4036, splat (double 2.000000e-03)
  %4038 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4039 = fcmp oeq <2 x double> %4038, zeroinitializer
  %4040 = and <2 x i1> %4035, %4039
  %4041 = and <2 x i1> %4037, %4040
  %4042 = fdiv <2 x double> %4033, %4032
  %4043 = select <2 x i1> %4041, <2 x i64> %4024, <2 x i64> zeroinitializer
  %4044 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %4045 = fcmp ogt <2 x double> %4044, %4036
  %4046 = select <2 x i1> %4045, <2 x double> %4044, <2 x double> %4036
  %4047 = select <2 x i1> %4041, <2 x double> zeroinitializer, <2 x double> %4046
  %4048 = icmp eq <2 x i64> %4043, zeroinitializer
  %4049 = select <2 x i1> %4048, <2 x double> %4044, <2 x double> %4047
  store <2 x double> %4049, ptr %172, align 16, !tbaa !26
  %4050 = fcmp ogt <2 x double> %4042, splat (double 5.000000e-02)
  %4051 = select <2 x i1> %4050, <2 x double> %4042, <2 x double> splat (double 5.000000e-02)
  %4052 = fcmp olt <2 x double> %4051, splat (double 0x3FEE666666666666)
  %4053 = select <2 x i1> %4052, <2 x double> %4051, <2 x double> splat (double 0x3FEE666666666666)
  %4054 = fmul <2 x double> %4036, %4053
  %4055 = fcmp ogt <2 x double> %4054, splat (double 0x3EB0C6F7A0B5ED8D)
  %4056 = select <2 x i1> %4055, <2 x double> %4054, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4057 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %4058 = select <2 x i1> %4048, <2 x double> %4057, <2 x double> %4056
  store <2 x double> %4058, ptr %152, align 16, !tbaa !26
  %4059 = load <2 x double>, ptr %137, align 16, !tbaa !26
  %4060 = fadd <2 x double> %4059, splat (double 1.000000e+00)
  %4061 = select <2 x i1> %4048, <2 x double> %4059, <2 x double> %4060
  store <2 x double> %4061, ptr %137, align 16, !tbaa !26
  %4062 = xor <2 x i64> %4043, %4024
  %4063 = icmp sgt i64 %4017, 0
  br i1 %4063, label %4064, label %4162

4064:                                             ; preds = %4016
  %4065 = load ptr, ptr %142, align 8, !tbaa !28
  %4066 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4067 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %4068 = fcmp une <2 x double> %4066, %4067
  %4069 = fcmp ule <2 x double> %4066, zeroinitializer
  %4070 = or <2 x i1> %4069, %4068
  %4071 = fcmp ogt <2 x double> %4036, splat (double 0x3E7AD7F29ABCAF48)
  %4072 = fcmp ogt <2 x double> %4036, splat (double 1.000000e-05)
  %4073 = fcmp ogt <2 x double> %4036, splat (double 1.000000e-04)
  br label %4074

4074:                                             ; preds = %4064, %4074
  %4075 = phi i64 [ 0, %4064 ], [ %4158, %4074 ]
  %4076 = phi <2 x i64> [ zeroinitializer, %4064 ], [ %4154, %4074 ]
  %4077 = phi <2 x i64> [ zeroinitializer, %4064 ], [ %4105, %4074 ]
  %4078 = phi <2 x double> [ splat (double 1.000000e+00), %4064 ], [ %4157, %4074 ]
  %4079 = getelementptr inbounds nuw %struct.Piece, ptr %4065, i64 %4075
  %4080 = getelementptr inbounds nuw i8, ptr %4079, i64 768
  %4081 = load <2 x double>, ptr %4080, align 16, !tbaa !26
  %4082 = getelementptr inbounds nuw i8, ptr %4079, i64 992
  %4083 = load <2 x double>, ptr %4082, align 16, !tbaa !26
  %4084 = getelementptr inbounds nuw i8, ptr %4079, i64 2080
  %4085 = load <2 x i64>, ptr %4084, align 16, !tbaa !26
  %4086 = xor <2 x i64> %4085, splat (i64 -1)
  %4087 = getelementptr inbounds nuw i8, ptr %4079, i64 224
  %4088 = load <2 x double>, ptr %4087, align 16, !tbaa !26
  %4089 = fmul <2 x double> %4088, splat (double 3.000000e-03)
  %4090 = fcmp ogt <2 x double> %4089, splat (double 0x3E7AD7F29ABCAF48)
  %4091 = fneg <2 x double> %4089
  %4092 = select <2 x i1> %4090, <2 x double> %4091, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4093 = fcmp olt <2 x double> %4081, %4092
  %4094 = select <2 x i1> %4093, <2 x i1> %4070, <2 x i1> zeroinitializer
  %4095 = select <2 x i1> %4094, <2 x i64> %4086, <2 x i64> zeroinitializer
  %4096 = fcmp ole <2 x double> %4083, zeroinitializer
  %4097 = select <2 x i1> %4096, <2 x i64> %4095, <2 x i64> zeroinitializer
  %4098 = getelementptr inbounds nuw i8, ptr %4079, i64 208
  %4099 = load <2 x double>, ptr %4098, align 16, !tbaa !26
  %4100 = fmul <2 x double> %4099, splat (double -3.000000e-07)
  %4101 = fcmp olt <2 x double> %4081, %4100
  %4102 = select <2 x i1> %4071, <2 x i1> %4101, <2 x i1> zeroinitializer
  %4103 = select <2 x i1> %4102, <2 x i64> %4097, <2 x i64> zeroinitializer
  %4104 = or <2 x i64> %4103, %4076
  %4105 = or <2 x i64> %4103, %4077
  %4106 = fcmp olt <2 x double> %4078, splat (double 3.000000e-01)
  %4107 = icmp eq <2 x i64> %4103, zeroinitializer
  %4108 = select <2 x i1> %4107, <2 x i1> splat (i1 true), <2 x i1> %4106
  %4109 = select <2 x i1> %4108, <2 x double> %4078, <2 x double> splat (double 3.000000e-01)
  %4110 = xor <2 x i64> %4097, splat (i64 -1)
  %4111 = and <2 x i64> %4095, %4110
  %4112 = select <2 x i1> %4072, <2 x i64> %4111, <2 x i64> zeroinitializer
  %4113 = fsub <2 x double> %4083, %4081
  %4114 = fdiv <2 x double> %4083, %4113
  %4115 = or <2 x i64> %4104, %4112
  %4116 = fcmp olt <2 x double> %4109, %4114
  %4117 = icmp eq <2 x i64> %4112, zeroinitializer
  %4118 = select <2 x i1> %4117, <2 x i1> splat (i1 true), <2 x i1> %4116
  %4119 = select <2 x i1> %4118, <2 x double> %4109, <2 x double> %4114
  %4120 = getelementptr inbounds nuw i8, ptr %4079, i64 976
  %4121 = load <2 x double>, ptr %4120, align 16, !tbaa !26
  %4122 = getelementptr inbounds nuw i8, ptr %4079, i64 752
  %4123 = load <2 x double>, ptr %4122, align 16, !tbaa !26
  %4124 = getelementptr inbounds nuw i8, ptr %4079, i64 1920
  %4125 = load <2 x double>, ptr %4124, align 16, !tbaa !26
  %4126 = fcmp oeq <2 x double> %4125, zeroinitializer
  %4127 = getelementptr inbounds nuw i8, ptr %4079, i64 368
  %4128 = load <2 x double>, ptr %4127, align 16, !tbaa !26
  %4129 = fmul <2 x double> %4128, splat (double 0x3FEFF7CED916872B)
  %4130 = fcmp olt <2 x double> %4123, %4129
  %4131 = and <2 x i1> %4126, %4130
  %4132 = and <2 x i1> %4073, %4131
  %4133 = fsub <2 x double> %4121, %4128
  %4134 = fsub <2 x double> %4121, %4123
  %4135 = fdiv <2 x double> %4133, %4134
  %4136 = fcmp uge <2 x double> %4119, %4135
  %4137 = select <2 x i1> %4132, <2 x i1> %4136, <2 x i1> zeroinitializer
  %4138 = select <2 x i1> %4137, <2 x double> %4135, <2 x double> %4119
  %4139 = fcmp oeq <2 x double> %4125, splat (double 1.000000e+00)
  %4140 = getelementptr inbounds nuw i8, ptr %4079, i64 816
  %4141 = load <2 x double>, ptr %4140, align 16, !tbaa !26
  %4142 = getelementptr inbounds nuw i8, ptr %4079, i64 400
  %4143 = load <2 x double>, ptr %4142, align 16, !tbaa !26
  %4144 = fmul <2 x double> %4143, splat (double 1.000100e+00)
  %4145 = fcmp ogt <2 x double> %4141, %4144
  %4146 = and <2 x i1> %4139, %4145
  %4147 = and <2 x i1> %4073, %4146
  %4148 = getelementptr inbounds nuw i8, ptr %4079, i64 1040
  %4149 = load <2 x double>, ptr %4148, align 16, !tbaa !26
  %4150 = fsub <2 x double> %4143, %4149
  %4151 = fsub <2 x double> %4141, %4149
  %4152 = fdiv <2 x double> %4150, %4151
  %4153 = select <2 x i1> %4146, <2 x i1> %4073, <2 x i1> %4132
  %4154 = select <2 x i1> %4153, <2 x i64> splat (i64 -1), <2 x i64> %4115
  %4155 = fcmp uge <2 x double> %4138, %4152
  %4156 = select <2 x i1> %4147, <2 x i1> %4155, <2 x i1> zeroinitializer
  %4157 = select <2 x i1> %4156, <2 x double> %4152, <2 x double> %4138
  %4158 = add nuw nsw i64 %4075, 1
  %4159 = icmp eq i64 %4158, %4017
  br i1 %4159, label %4160, label %4074, !llvm.loop !134

4160:                                             ; preds = %4074
  %4161 = icmp eq <2 x i64> %4105, zeroinitializer
  br label %4162

4162:                                             ; preds = %4160, %4016
  %4163 = phi <2 x double> [ splat (double 1.000000e+00), %4016 ], [ %4157, %4160 ]
  %4164 = phi <2 x i1> [ splat (i1 true), %4016 ], [ %4161, %4160 ]
  %4165 = phi <2 x i64> [ zeroinitializer, %4016 ], [ %4154, %4160 ]
  %4166 = and <2 x i64> %4165, %4062
  %4167 = fcmp ogt <2 x double> %4049, %4036
  %4168 = select <2 x i1> %4167, <2 x double> %4049, <2 x double> %4036
  %4169 = select <2 x i1> %4164, <2 x double> %4168, <2 x double> zeroinitializer
  %4170 = icmp eq <2 x i64> %4166, zeroinitializer
  %4171 = select <2 x i1> %4170, <2 x double> %4049, <2 x double> %4169
  %4172 = fcmp ogt <2 x double> %4163, splat (double 5.000000e-02)
  %4173 = select <2 x i1> %4172, <2 x double> %4163, <2 x double> splat (double 5.000000e-02)
  %4174 = fcmp olt <2 x double> %4173, splat (double 0x3FEE666666666666)
  %4175 = select <2 x i1> %4174, <2 x double> %4173, <2 x double> splat (double 0x3FEE666666666666)
  %4176 = fmul <2 x double> %4036, %4175
  %4177 = fcmp ogt <2 x double> %4176, splat (double 0x3EB0C6F7A0B5ED8D)
  %4178 = select <2 x i1> %4177, <2 x double> %4176, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4179 = select <2 x i1> %4170, <2 x double> %4058, <2 x double> %4178
  %4180 = fadd <2 x double> %4061, splat (double 1.000000e+00)
  %4181 = select <2 x i1> %4170, <2 x double> %4061, <2 x double> %4180
  %4182 = xor <2 x i64> %4166, %4062
  %4183 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %4184 = fmul <2 x double> %4183, splat (double 5.000000e-01)
  %4185 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %4186 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %4187 = fneg <2 x double> %4184
  %4188 = icmp eq <2 x i64> %4186, zeroinitializer
  %4189 = select <2 x i1> %4188, <2 x double> %4187, <2 x double> %4184
  %4190 = fadd <2 x double> %4185, %4189
  %4191 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %4192 = fsub <2 x double> %4191, %4190
  %4193 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %4194 = fsub <2 x double> %4193, %4190
  %4195 = fneg <2 x double> %4192
  %4196 = select <2 x i1> %4188, <2 x double> %4195, <2 x double> %4192
  %4197 = fneg <2 x double> %4194
  %4198 = select <2 x i1> %4188, <2 x double> %4197, <2 x double> %4194
  %4199 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %4200 = fcmp oeq <2 x double> %4199, zeroinitializer
  %4201 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %4202 = fcmp oeq <2 x double> %4201, zeroinitializer
  %4203 = and <2 x i1> %4200, %4202
  %4204 = fcmp olt <2 x double> %4196, splat (double -4.000000e-03)
  %4205 = and <2 x i1> %4203, %4204
  %4206 = fcmp ogt <2 x double> %4198, splat (double 4.000000e-03)
  %4207 = and <2 x i1> %4206, %4205
  %4208 = and <2 x i1> %4037, %4207
  %4209 = fsub <2 x double> %4196, %4198
  %4210 = fdiv <2 x double> %4196, %4209
  %4211 = select <2 x i1> %4208, <2 x i64> %4182, <2 x i64> zeroinitializer
  %4212 = fcmp ogt <2 x double> %4171, %4036
  %4213 = icmp eq <2 x i64> %4211, zeroinitializer
  %4214 = select <2 x i1> %4213, <2 x i1> splat (i1 true), <2 x i1> %4212
  %4215 = select <2 x i1> %4214, <2 x double> %4171, <2 x double> %4036
  store <2 x double> %4215, ptr %172, align 16, !tbaa !26
  %4216 = fcmp ogt <2 x double> %4210, splat (double 5.000000e-02)
  %4217 = select <2 x i1> %4216, <2 x double> %4210, <2 x double> splat (double 5.000000e-02)
  %4218 = fcmp olt <2 x double> %4217, splat (double 0x3FEE666666666666)
  %4219 = select <2 x i1> %4218, <2 x double> %4217, <2 x double> splat (double 0x3FEE666666666666)
  %4220 = fmul <2 x double> %4036, %4219
  %4221 = fcmp ogt <2 x double> %4220, splat (double 0x3EB0C6F7A0B5ED8D)
  %4222 = select <2 x i1> %4221, <2 x double> %4220, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4223 = select <2 x i1> %4213, <2 x double> %4179, <2 x double> %4222
  store <2 x double> %4223, ptr %152, align 16, !tbaa !26
  %4224 = fadd <2 x double> %4181, splat (double 1.000000e+00)
  %4225 = select <2 x i1> %4213, <2 x double> %4181, <2 x double> %4224
  store <2 x double> %4225, ptr %137, align 16, !tbaa !26
  %4226 = xor <2 x i64> %4211, %4182
  %4227 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4228 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %4229 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %4230 = fsub <2 x double> %4228, %4229
  %4231 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %4232 = fcmp une <2 x double> %4231, splat (double 1.000000e+00)
  %4233 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %4234 = fsub <2 x double> %4191, %4233
  %4235 = select <2 x i1> %4232, <2 x double> splat (double -1.000000e+00), <2 x double> %4234
  %4236 = fcmp une <2 x double> %4231, splat (double 2.000000e+00)
  %4237 = fsub <2 x double> %4227, %4233
  %4238 = select <2 x i1> %4236, <2 x double> %4235, <2 x double> %4237
  %4239 = fcmp une <2 x double> %4231, splat (double 3.000000e+00)
  %4240 = fsub <2 x double> %4230, %4233
  %4241 = select <2 x i1> %4239, <2 x double> %4238, <2 x double> %4240
  %4242 = fcmp une <2 x double> %4231, splat (double 4.000000e+00)
  %4243 = fsub <2 x double> %4233, %4230
  %4244 = select <2 x i1> %4242, <2 x double> %4241, <2 x double> %4243
  br i1 %4063, label %4245, label %4293

4245:                                             ; preds = %4162
  %4246 = load ptr, ptr %142, align 8, !tbaa !28
  %4247 = and i64 %4017, 3
  %4248 = icmp ult i64 %4017, 4
  br i1 %4248, label %4277, label %4249

4249:                                             ; preds = %4245
  %4250 = and i64 %4017, 9223372036854775804
  br label %4251

4251:                                             ; preds = %4251, %4249
  %4252 = phi i64 [ 0, %4249 ], [ %4274, %4251 ]
  %4253 = phi <2 x double> [ splat (double 1.000000e+09), %4249 ], [ %4273, %4251 ]
  %4254 = phi i64 [ 0, %4249 ], [ %4275, %4251 ]
  %4255 = getelementptr inbounds nuw %struct.Piece, ptr %4246, i64 %4252, i32 35
  %4256 = load <2 x double>, ptr %4255, align 16, !tbaa !26
  %4257 = fcmp olt <2 x double> %4253, %4256
  %4258 = select <2 x i1> %4257, <2 x double> %4253, <2 x double> %4256
  %4259 = or disjoint i64 %4252, 1
  %4260 = getelementptr inbounds nuw %struct.Piece, ptr %4246, i64 %4259, i32 35
  %4261 = load <2 x double>, ptr %4260, align 16, !tbaa !26
  %4262 = fcmp olt <2 x double> %4258, %4261
  %4263 = select <2 x i1> %4262, <2 x double> %4258, <2 x double> %4261
  %4264 = or disjoint i64 %4252, 2
  %4265 = getelementptr inbounds nuw %struct.Piece, ptr %4246, i64 %4264, i32 35
  %4266 = load <2 x double>, ptr %4265, align 16, !tbaa !26
  %4267 = fcmp olt <2 x double> %4263, %4266
  %4268 = select <2 x i1> %4267, <2 x double> %4263, <2 x double> %4266
  %4269 = or disjoint i64 %4252, 3
  %4270 = getelementptr inbounds nuw %struct.Piece, ptr %4246, i64 %4269, i32 35
  %4271 = load <2 x double>, ptr %4270, align 16, !tbaa !26
  %4272 = fcmp olt <2 x double> %4268, %4271
  %4273 = select <2 x i1> %4272, <2 x double> %4268, <2 x double> %4271
  %4274 = add nuw nsw i64 %4252, 4
  %4275 = add i64 %4254, 4
  %4276 = icmp eq i64 %4275, %4250
  br i1 %4276, label %4277, label %4251, !llvm.loop !135

4277:                                             ; preds = %4251, %4245
  %4278 = phi <2 x double> [ poison, %4245 ], [ %4273, %4251 ]
  %4279 = phi i64 [ 0, %4245 ], [ %4274, %4251 ]
  %4280 = phi <2 x double> [ splat (double 1.000000e+09), %4245 ], [ %4273, %4251 ]
  %4281 = icmp eq i64 %4247, 0
  br i1 %4281, label %4293, label %4282

4282:                                             ; preds = %4277, %4282
  %4283 = phi i64 [ %4290, %4282 ], [ %4279, %4277 ]
  %4284 = phi <2 x double> [ %4289, %4282 ], [ %4280, %4277 ]
  %4285 = phi i64 [ %4291, %4282 ], [ 0, %4277 ]
  %4286 = getelementptr inbounds nuw %struct.Piece, ptr %4246, i64 %4283, i32 35
  %4287 = load <2 x double>, ptr %4286, align 16, !tbaa !26
  %4288 = fcmp olt <2 x double> %4284, %4287
  %4289 = select <2 x i1> %4288, <2 x double> %4284, <2 x double> %4287
  %4290 = add nuw nsw i64 %4283, 1
  %4291 = add i64 %4285, 1
  %4292 = icmp eq i64 %4291, %4247
  br i1 %4292, label %4293, label %4282, !llvm.loop !136

4293:                                             ; preds = %4277, %4282, %4162
  %4294 = phi <2 x double> [ splat (double 1.000000e+09), %4162 ], [ %4278, %4277 ], [ %4289, %4282 ]
  %4295 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %4296 = fsub <2 x double> %4295, %4229
  %4297 = fsub <2 x double> %4193, %4233
  %4298 = select <2 x i1> %4232, <2 x double> splat (double -1.000000e+00), <2 x double> %4297
  %4299 = fsub <2 x double> %4294, %4233
  %4300 = select <2 x i1> %4236, <2 x double> %4298, <2 x double> %4299
  %4301 = fsub <2 x double> %4296, %4233
  %4302 = select <2 x i1> %4239, <2 x double> %4300, <2 x double> %4301
  %4303 = fsub <2 x double> %4233, %4296
  %4304 = select <2 x i1> %4242, <2 x double> %4302, <2 x double> %4303
  %4305 = fcmp une <2 x double> %4231, zeroinitializer
  %4306 = fcmp oge <2 x double> %4036, splat (double 5.000000e-02)
  %4307 = and <2 x i1> %4306, %4305
  %4308 = fcmp olt <2 x double> %4244, zeroinitializer
  %4309 = and <2 x i1> %4307, %4308
  %4310 = fsub <2 x double> %4304, %4244
  %4311 = fmul <2 x double> %4310, splat (double 2.000000e-02)
  %4312 = fcmp ogt <2 x double> %4304, %4311
  %4313 = and <2 x i1> %4309, %4312
  %4314 = fsub <2 x double> %4244, %4304
  %4315 = fdiv <2 x double> %4244, %4314
  %4316 = fcmp olt <2 x double> %4315, splat (double 0x3FEE666666666666)
  %4317 = and <2 x i1> %4316, %4313
  %4318 = select <2 x i1> %4317, <2 x i64> %4226, <2 x i64> zeroinitializer
  %4319 = fcmp ogt <2 x double> %4215, %4036
  %4320 = icmp eq <2 x i64> %4318, zeroinitializer
  %4321 = select <2 x i1> %4320, <2 x i1> splat (i1 true), <2 x i1> %4319
  %4322 = select <2 x i1> %4321, <2 x double> %4215, <2 x double> %4036
  store <2 x double> %4322, ptr %172, align 16, !tbaa !26
  %4323 = fcmp ogt <2 x double> %4315, splat (double 5.000000e-02)
  %4324 = select <2 x i1> %4323, <2 x double> %4315, <2 x double> splat (double 5.000000e-02)
  %4325 = fcmp olt <2 x double> %4324, splat (double 0x3FEE666666666666)
  %4326 = select <2 x i1> %4325, <2 x double> %4324, <2 x double> splat (double 0x3FEE666666666666)
  %4327 = fmul <2 x double> %4036, %4326
  %4328 = fcmp ogt <2 x double> %4327, splat (double 0x3EB0C6F7A0B5ED8D)
  %4329 = select <2 x i1> %4328, <2 x double> %4327, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4330 = select <2 x i1> %4320, <2 x double> %4223, <2 x double> %4329
  store <2 x double> %4330, ptr %152, align 16, !tbaa !26
  %4331 = fadd <2 x double> %4225, splat (double 1.000000e+00)
  %4332 = select <2 x i1> %4320, <2 x double> %4225, <2 x double> %4331
  store <2 x double> %4332, ptr %137, align 16, !tbaa !26
  %4333 = xor <2 x i64> %4318, %4226
  %4334 = or <2 x i64> %4333, %4023
  %4335 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4334)
  %4336 = icmp eq i64 %4335, 0
  br i1 %4336, label %527, label %4393

4337:                                             ; preds = %3970, %4385
  %4338 = phi i64 [ 0, %3970 ], [ %4390, %4385 ]
  %4339 = load ptr, ptr %142, align 8, !tbaa !28
  %4340 = getelementptr inbounds nuw %struct.Piece, ptr %4339, i64 %4338
  %4341 = getelementptr inbounds nuw i8, ptr %4340, i64 2136
  %4342 = load ptr, ptr %4341, align 8, !tbaa !58
  %4343 = load <2 x double>, ptr %4342, align 16, !tbaa !26
  %4344 = getelementptr inbounds nuw i8, ptr %4340, i64 336
  %4345 = load <2 x double>, ptr %4344, align 16, !tbaa !26
  %4346 = getelementptr inbounds nuw i8, ptr %4342, i64 16
  %4347 = load <2 x double>, ptr %4346, align 16, !tbaa !26
  %4348 = fsub <2 x double> %4347, %4343
  %4349 = fneg <2 x double> %4345
  %4350 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4349, <2 x double> %4348, <2 x double> %4343)
  %4351 = getelementptr inbounds nuw i8, ptr %4340, i64 2128
  %4352 = load i64, ptr %4351, align 16, !tbaa !31
  %4353 = icmp eq i64 %4352, 0
  br i1 %4353, label %4385, label %4354

4354:                                             ; preds = %4337
  %4355 = getelementptr <2 x double>, ptr %4342, i64 %4352
  %4356 = getelementptr i8, ptr %4355, i64 -16
  %4357 = load <2 x double>, ptr %4356, align 16, !tbaa !26
  %4358 = load <2 x double>, ptr %4355, align 16, !tbaa !26
  %4359 = getelementptr inbounds nuw i8, ptr %4340, i64 720
  %4360 = load <2 x double>, ptr %4359, align 16, !tbaa !26
  %4361 = getelementptr inbounds nuw i8, ptr %4340, i64 736
  %4362 = load <2 x double>, ptr %4361, align 16, !tbaa !26
  %4363 = getelementptr inbounds nuw i8, ptr %4340, i64 16
  %4364 = load <2 x double>, ptr %4363, align 16, !tbaa !26
  %4365 = fsub <2 x double> %4362, %4364
  %4366 = fmul <2 x double> %4360, %4365
  %4367 = getelementptr inbounds nuw i8, ptr %4340, i64 144
  %4368 = load <2 x double>, ptr %4367, align 16, !tbaa !26
  %4369 = getelementptr inbounds nuw i8, ptr %4340, i64 704
  %4370 = load <2 x double>, ptr %4369, align 16, !tbaa !26
  %4371 = fdiv <2 x double> %4368, %4370
  %4372 = getelementptr inbounds nuw i8, ptr %4340, i64 48
  %4373 = load <2 x double>, ptr %4372, align 16, !tbaa !26
  %4374 = getelementptr inbounds nuw i8, ptr %4340, i64 64
  %4375 = load <2 x double>, ptr %4374, align 16, !tbaa !26
  %4376 = getelementptr inbounds nuw i8, ptr %4340, i64 80
  %4377 = load <2 x double>, ptr %4376, align 16, !tbaa !26
  %4378 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4358, <2 x double> %4377, <2 x double> %4375)
  %4379 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4358, <2 x double> %4378, <2 x double> %4373)
  %4380 = fdiv <2 x double> %4379, %4366
  %4381 = fmul <2 x double> %4358, %4380
  %4382 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4371, <2 x double> %4357, <2 x double> %4381)
  %4383 = fadd <2 x double> %4371, %4380
  %4384 = fdiv <2 x double> %4382, %4383
  br label %4385

4385:                                             ; preds = %4337, %4354
  %4386 = phi <2 x double> [ %4384, %4354 ], [ %4350, %4337 ]
  %4387 = getelementptr inbounds nuw i8, ptr %4340, i64 1904
  %4388 = load <2 x double>, ptr %4387, align 16, !tbaa !26
  %4389 = select <2 x i1> %3971, <2 x double> %4388, <2 x double> %4386
  store <2 x double> %4389, ptr %4387, align 16, !tbaa !26
  %4390 = add nuw nsw i64 %4338, 1
  %4391 = load i64, ptr %169, align 8, !tbaa !20
  %4392 = icmp slt i64 %4390, %4391
  br i1 %4392, label %4337, label %4016, !llvm.loop !138

4393:                                             ; preds = %4293
  %4394 = icmp eq <2 x i64> %4334, zeroinitializer
  %4395 = select <2 x i1> %4394, <2 x double> %4030, <2 x double> %4029
  store <2 x double> %4395, ptr %219, align 16, !tbaa !26
  %4396 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %4397 = select <2 x i1> %4394, <2 x double> %4396, <2 x double> %4191
  store <2 x double> %4397, ptr %163, align 16, !tbaa !26
  %4398 = select <2 x i1> %4394, <2 x double> %4191, <2 x double> %4193
  store <2 x double> %4398, ptr %157, align 16, !tbaa !26
  %4399 = load <2 x double>, ptr %250, align 16, !tbaa !26
  %4400 = select <2 x i1> %4394, <2 x double> %4399, <2 x double> %4228
  store <2 x double> %4400, ptr %250, align 16, !tbaa !26
  %4401 = select <2 x i1> %4394, <2 x double> %4228, <2 x double> %4295
  store <2 x double> %4401, ptr %251, align 16, !tbaa !26
  %4402 = load <2 x double>, ptr %253, align 16, !tbaa !26
  %4403 = load <2 x double>, ptr %252, align 16, !tbaa !26
  %4404 = select <2 x i1> %4394, <2 x double> %4403, <2 x double> %4402
  store <2 x double> %4404, ptr %252, align 16, !tbaa !26
  %4405 = load <2 x double>, ptr %254, align 16, !tbaa !26
  %4406 = select <2 x i1> %4394, <2 x double> %4402, <2 x double> %4405
  store <2 x double> %4406, ptr %253, align 16, !tbaa !26
  %4407 = load <2 x double>, ptr %256, align 16, !tbaa !26
  %4408 = load <2 x double>, ptr %255, align 16, !tbaa !26
  %4409 = select <2 x i1> %4394, <2 x double> %4408, <2 x double> %4407
  store <2 x double> %4409, ptr %255, align 16, !tbaa !26
  %4410 = load <2 x double>, ptr %257, align 16, !tbaa !26
  %4411 = select <2 x i1> %4394, <2 x double> %4407, <2 x double> %4410
  store <2 x double> %4411, ptr %256, align 16, !tbaa !26
  %4412 = load <2 x double>, ptr %259, align 16, !tbaa !26
  %4413 = load <2 x double>, ptr %258, align 16, !tbaa !26
  %4414 = select <2 x i1> %4394, <2 x double> %4413, <2 x double> %4412
  store <2 x double> %4414, ptr %258, align 16, !tbaa !26
  %4415 = load <2 x double>, ptr %260, align 16, !tbaa !26
  %4416 = select <2 x i1> %4394, <2 x double> %4412, <2 x double> %4415
  store <2 x double> %4416, ptr %259, align 16, !tbaa !26
  %4417 = load <2 x double>, ptr %262, align 16, !tbaa !26
  %4418 = load <2 x double>, ptr %261, align 16, !tbaa !26
  %4419 = select <2 x i1> %4394, <2 x double> %4418, <2 x double> %4417
  store <2 x double> %4419, ptr %261, align 16, !tbaa !26
  %4420 = load <2 x double>, ptr %263, align 16, !tbaa !26
  %4421 = select <2 x i1> %4394, <2 x double> %4417, <2 x double> %4420
  store <2 x double> %4421, ptr %262, align 16, !tbaa !26
  %4422 = xor <2 x i64> %4334, splat (i64 -1)
  br i1 %4063, label %4423, label %4825

4423:                                             ; preds = %4393, %4781
  %4424 = phi i64 [ %4793, %4781 ], [ 0, %4393 ]
  %4425 = load ptr, ptr %142, align 8, !tbaa !28
  %4426 = getelementptr inbounds nuw %struct.Piece, ptr %4425, i64 %4424
  %4427 = getelementptr inbounds nuw i8, ptr %4426, i64 416
  %4428 = load <2 x double>, ptr %4427, align 16, !tbaa !26
  %4429 = fcmp ogt <2 x double> %4428, zeroinitializer
  %4430 = bitcast <2 x i1> %4429 to i2
  %4431 = icmp eq i2 %4430, 0
  br i1 %4431, label %4688, label %4432

4432:                                             ; preds = %4423
  %4433 = load i64, ptr %132, align 16, !tbaa !21
  %4434 = add i64 %4433, -1
  %4435 = getelementptr inbounds nuw i8, ptr %4426, i64 1168
  %4436 = load <2 x double>, ptr %4435, align 16, !tbaa !26
  %4437 = getelementptr inbounds nuw i8, ptr %4426, i64 944
  %4438 = load <2 x double>, ptr %4437, align 16, !tbaa !26
  %4439 = getelementptr inbounds nuw i8, ptr %4426, i64 2128
  %4440 = load i64, ptr %4439, align 16, !tbaa !31
  %4441 = icmp sgt i64 %4433, %4440
  br i1 %4441, label %4450, label %4442

4442:                                             ; preds = %4432
  %4443 = getelementptr inbounds nuw i8, ptr %4426, i64 2224
  %4444 = load ptr, ptr %4443, align 16, !tbaa !73
  %4445 = getelementptr inbounds <2 x double>, ptr %4444, i64 %4434
  %4446 = load <2 x double>, ptr %4445, align 16, !tbaa !26
  %4447 = getelementptr inbounds nuw i8, ptr %4426, i64 384
  %4448 = load <2 x double>, ptr %4447, align 16, !tbaa !26
  %4449 = fmul <2 x double> %4446, %4448
  br label %4459

4450:                                             ; preds = %4432
  %4451 = getelementptr inbounds nuw i8, ptr %4426, i64 384
  %4452 = load <2 x double>, ptr %4451, align 16, !tbaa !26
  %4453 = getelementptr inbounds nuw i8, ptr %4426, i64 2224
  %4454 = load ptr, ptr %4453, align 16, !tbaa !73
  %4455 = getelementptr inbounds <2 x double>, ptr %4454, i64 %4434
  %4456 = load <2 x double>, ptr %4455, align 16, !tbaa !26
  %4457 = fsub <2 x double> %4436, %4452
  %4458 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4456, <2 x double> %4457, <2 x double> %4452)
  br label %4459

4459:                                             ; preds = %4450, %4442
  %4460 = phi <2 x double> [ %4448, %4442 ], [ %4452, %4450 ]
  %4461 = phi <2 x double> [ %4449, %4442 ], [ %4458, %4450 ]
  %4462 = getelementptr inbounds nuw i8, ptr %4426, i64 752
  %4463 = load <2 x double>, ptr %4462, align 16, !tbaa !26
  %4464 = fcmp ole <2 x double> %4461, %4463
  %4465 = getelementptr inbounds nuw i8, ptr %4426, i64 1920
  %4466 = load <2 x double>, ptr %4465, align 16, !tbaa !26
  %4467 = fcmp oeq <2 x double> %4466, zeroinitializer
  %4468 = select <2 x i1> %4467, <2 x i1> %4464, <2 x i1> zeroinitializer
  %4469 = select <2 x i1> %4468, <2 x i64> %4334, <2 x i64> zeroinitializer
  %4470 = xor <2 x i64> %4469, %4334
  %4471 = fsub <2 x double> %4436, %4438
  %4472 = getelementptr inbounds nuw i8, ptr %4426, i64 384
  %4473 = fsub <2 x double> %4438, %4460
  %4474 = fdiv <2 x double> %4471, %4473
  %4475 = getelementptr inbounds nuw i8, ptr %4426, i64 2168
  %4476 = load ptr, ptr %4475, align 8, !tbaa !68
  %4477 = getelementptr inbounds <2 x double>, ptr %4476, i64 %4440
  %4478 = load <2 x double>, ptr %4477, align 16, !tbaa !26
  %4479 = getelementptr inbounds nuw i8, ptr %4426, i64 2176
  %4480 = load ptr, ptr %4479, align 16, !tbaa !48
  %4481 = getelementptr inbounds <2 x double>, ptr %4480, i64 %4440
  %4482 = load <2 x double>, ptr %4481, align 16, !tbaa !26
  %4483 = icmp eq <2 x i64> %4469, zeroinitializer
  %4484 = select <2 x i1> %4483, <2 x double> %4482, <2 x double> %4478
  store <2 x double> %4484, ptr %4481, align 16, !tbaa !26
  %4485 = load i64, ptr %4439, align 16, !tbaa !31
  %4486 = add nsw i64 %4485, 1
  %4487 = icmp slt i64 %4486, %4434
  br i1 %4487, label %4488, label %4492

4488:                                             ; preds = %4459
  %4489 = getelementptr inbounds nuw i8, ptr %4426, i64 2240
  br label %4534

4490:                                             ; preds = %4534
  %4491 = load i64, ptr %4439, align 16, !tbaa !31
  br label %4492

4492:                                             ; preds = %4490, %4459
  %4493 = phi i64 [ %4485, %4459 ], [ %4491, %4490 ]
  %4494 = phi <2 x double> [ %4478, %4459 ], [ %4539, %4490 ]
  %4495 = icmp sgt i64 %4433, %4493
  br i1 %4495, label %4503, label %4496

4496:                                             ; preds = %4492
  %4497 = getelementptr inbounds nuw i8, ptr %4426, i64 2224
  %4498 = load ptr, ptr %4497, align 16, !tbaa !73
  %4499 = getelementptr inbounds <2 x double>, ptr %4498, i64 %4434
  %4500 = load <2 x double>, ptr %4499, align 16, !tbaa !26
  %4501 = load <2 x double>, ptr %4472, align 16, !tbaa !26
  %4502 = fmul <2 x double> %4500, %4501
  br label %4511

4503:                                             ; preds = %4492
  %4504 = load <2 x double>, ptr %4472, align 16, !tbaa !26
  %4505 = getelementptr inbounds nuw i8, ptr %4426, i64 2224
  %4506 = load ptr, ptr %4505, align 16, !tbaa !73
  %4507 = getelementptr inbounds <2 x double>, ptr %4506, i64 %4434
  %4508 = load <2 x double>, ptr %4507, align 16, !tbaa !26
  %4509 = fsub <2 x double> %4438, %4504
  %4510 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4508, <2 x double> %4509, <2 x double> %4504)
  br label %4511

4511:                                             ; preds = %4503, %4496
  %4512 = phi <2 x double> [ %4502, %4496 ], [ %4510, %4503 ]
  %4513 = load ptr, ptr %4475, align 8, !tbaa !68
  %4514 = getelementptr inbounds <2 x double>, ptr %4513, i64 %4434
  %4515 = load <2 x double>, ptr %4514, align 16, !tbaa !26
  %4516 = load ptr, ptr %4479, align 16, !tbaa !48
  %4517 = getelementptr inbounds <2 x double>, ptr %4516, i64 %4434
  %4518 = fsub <2 x double> %4494, %4515
  %4519 = fsub <2 x double> %4461, %4512
  %4520 = load <2 x double>, ptr %4462, align 16, !tbaa !26
  %4521 = fsub <2 x double> %4520, %4512
  %4522 = fdiv <2 x double> %4519, %4521
  %4523 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4518, <2 x double> %4522, <2 x double> %4515)
  %4524 = load <2 x double>, ptr %4517, align 16, !tbaa !26
  %4525 = select <2 x i1> %4483, <2 x double> %4524, <2 x double> %4523
  store <2 x double> %4525, ptr %4517, align 16, !tbaa !26
  %4526 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4470)
  %4527 = icmp eq i64 %4526, 0
  br i1 %4527, label %4688, label %4528

4528:                                             ; preds = %4511
  %4529 = getelementptr inbounds nuw i8, ptr %4426, i64 2224
  %4530 = getelementptr inbounds nuw i8, ptr %4426, i64 784
  %4531 = getelementptr inbounds nuw i8, ptr %4426, i64 208
  %4532 = extractelement <2 x i64> %4470, i64 0
  %4533 = extractelement <2 x i64> %4470, i64 1
  br label %4552

4534:                                             ; preds = %4488, %4534
  %4535 = phi i64 [ %4486, %4488 ], [ %4550, %4534 ]
  %4536 = phi <2 x double> [ %4478, %4488 ], [ %4539, %4534 ]
  %4537 = load ptr, ptr %4475, align 8, !tbaa !68
  %4538 = getelementptr inbounds <2 x double>, ptr %4537, i64 %4535
  %4539 = load <2 x double>, ptr %4538, align 16, !tbaa !26
  %4540 = load ptr, ptr %4479, align 16, !tbaa !48
  %4541 = getelementptr inbounds <2 x double>, ptr %4540, i64 %4535
  %4542 = fsub <2 x double> %4536, %4539
  %4543 = load ptr, ptr %4489, align 16, !tbaa !139
  %4544 = getelementptr inbounds <2 x double>, ptr %4543, i64 %4535
  %4545 = load <2 x double>, ptr %4544, align 16, !tbaa !26
  %4546 = fmul <2 x double> %4474, %4545
  %4547 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4542, <2 x double> %4546, <2 x double> %4539)
  %4548 = load <2 x double>, ptr %4541, align 16, !tbaa !26
  %4549 = select <2 x i1> %4483, <2 x double> %4548, <2 x double> %4547
  store <2 x double> %4549, ptr %4541, align 16, !tbaa !26
  %4550 = add nsw i64 %4535, 1
  %4551 = icmp eq i64 %4550, %4434
  br i1 %4551, label %4490, label %4534, !llvm.loop !140

4552:                                             ; preds = %4528, %4687
  %4553 = phi i1 [ true, %4528 ], [ false, %4687 ]
  %4554 = phi i64 [ %4532, %4528 ], [ %4533, %4687 ]
  %4555 = phi i64 [ 0, %4528 ], [ 1, %4687 ]
  %4556 = icmp eq i64 %4554, 0
  br i1 %4556, label %4687, label %4557

4557:                                             ; preds = %4552
  %4558 = load i64, ptr %132, align 16, !tbaa !21
  %4559 = load i64, ptr %4439, align 16, !tbaa !31
  %4560 = getelementptr inbounds nuw double, ptr %4472, i64 %4555
  %4561 = load double, ptr %4560, align 8, !tbaa !43
  %4562 = getelementptr inbounds nuw double, ptr %4462, i64 %4555
  %4563 = load double, ptr %4562, align 8, !tbaa !43
  %4564 = add nsw i64 %4558, -1
  %4565 = icmp sgt i64 %4558, %4559
  br i1 %4565, label %4566, label %4687

4566:                                             ; preds = %4557
  %4567 = getelementptr inbounds nuw double, ptr %4437, i64 %4555
  %4568 = load double, ptr %4567, align 8, !tbaa !43
  %4569 = getelementptr inbounds nuw double, ptr %4435, i64 %4555
  %4570 = load double, ptr %4569, align 8, !tbaa !43
  %4571 = load ptr, ptr %4529, align 16
  %4572 = getelementptr i8, ptr %4571, i64 16
  %4573 = getelementptr double, ptr %4572, i64 %4555
  %4574 = fsub double %4568, %4561
  %4575 = getelementptr double, ptr %4571, i64 %4555
  %4576 = fsub double %4570, %4561
  %4577 = load ptr, ptr %4475, align 8, !tbaa !68
  %4578 = getelementptr double, ptr %4577, i64 %4555
  %4579 = load ptr, ptr %4479, align 16, !tbaa !48
  %4580 = getelementptr double, ptr %4579, i64 %4555
  %4581 = getelementptr <2 x double>, ptr %4575, i64 %4564
  br label %4609

4582:                                             ; preds = %4655
  %4583 = getelementptr inbounds nuw double, ptr %4465, i64 %4555
  %4584 = load double, ptr %4583, align 8, !tbaa !43
  %4585 = fcmp ogt double %4584, 0.000000e+00
  %4586 = fcmp ogt double %4666, 0.000000e+00
  %4587 = select i1 %4585, i1 %4586, i1 false
  br i1 %4587, label %4588, label %4687

4588:                                             ; preds = %4582
  %4589 = getelementptr inbounds nuw double, ptr %4530, i64 %4555
  %4590 = getelementptr inbounds nuw double, ptr %4531, i64 %4555
  %4591 = sub i64 %4558, %4559
  %4592 = add i64 %4559, 1
  %4593 = and i64 %4591, 1
  %4594 = icmp eq i64 %4593, 0
  br i1 %4594, label %4604, label %4595

4595:                                             ; preds = %4588
  %4596 = load double, ptr %4589, align 8, !tbaa !43
  %4597 = load double, ptr %4590, align 8, !tbaa !43
  %4598 = fmul double %4666, %4597
  %4599 = fdiv double %4596, %4598
  %4600 = getelementptr <2 x double>, ptr %4580, i64 %4559
  %4601 = load double, ptr %4600, align 8, !tbaa !43
  %4602 = fmul double %4601, %4599
  store double %4602, ptr %4600, align 8, !tbaa !43
  %4603 = add nsw i64 %4559, 1
  br label %4604

4604:                                             ; preds = %4595, %4588
  %4605 = phi i64 [ %4559, %4588 ], [ %4603, %4595 ]
  %4606 = icmp eq i64 %4558, %4592
  br i1 %4606, label %4687, label %4607

4607:                                             ; preds = %4604
  %4608 = getelementptr i8, ptr %4580, i64 16
  br label %4669

4609:                                             ; preds = %4655, %4566
  %4610 = phi double [ 0.000000e+00, %4566 ], [ %4666, %4655 ]
  %4611 = phi i64 [ %4564, %4566 ], [ %4667, %4655 ]
  %4612 = icmp eq i64 %4611, %4564
  br i1 %4612, label %4613, label %4616

4613:                                             ; preds = %4609
  %4614 = load double, ptr %4581, align 8, !tbaa !43
  %4615 = tail call noundef double @llvm.fmuladd.f64(double %4614, double %4574, double %4561)
  br label %4627

4616:                                             ; preds = %4609
  %4617 = getelementptr <2 x double>, ptr %4573, i64 %4611
  %4618 = load double, ptr %4617, align 8, !tbaa !43
  %4619 = tail call noundef double @llvm.fmuladd.f64(double %4618, double %4574, double %4561)
  %4620 = getelementptr <2 x double>, ptr %4575, i64 %4611
  %4621 = load double, ptr %4620, align 8, !tbaa !43
  %4622 = tail call noundef double @llvm.fmuladd.f64(double %4621, double %4574, double %4561)
  %4623 = tail call noundef double @llvm.fmuladd.f64(double %4618, double %4576, double %4561)
  %4624 = fcmp ult double %4623, %4619
  br i1 %4624, label %4625, label %4627

4625:                                             ; preds = %4616
  %4626 = add nsw i64 %4611, 1
  br label %4627

4627:                                             ; preds = %4625, %4616, %4613
  %4628 = phi double [ %4622, %4625 ], [ %4622, %4616 ], [ %4615, %4613 ]
  %4629 = phi double [ %4619, %4625 ], [ %4619, %4616 ], [ %4563, %4613 ]
  %4630 = phi i64 [ %4626, %4625 ], [ %4611, %4616 ], [ %4564, %4613 ]
  %4631 = icmp sgt i64 %4630, %4559
  br i1 %4631, label %4632, label %4655

4632:                                             ; preds = %4627
  %4633 = load ptr, ptr %4475, align 8
  %4634 = getelementptr double, ptr %4633, i64 %4555
  br label %4635

4635:                                             ; preds = %4650, %4632
  %4636 = phi i64 [ %4630, %4632 ], [ %4653, %4650 ]
  %4637 = phi double [ 0.000000e+00, %4632 ], [ %4652, %4650 ]
  %4638 = phi double [ %4629, %4632 ], [ %4651, %4650 ]
  %4639 = getelementptr <2 x double>, ptr %4575, i64 %4636
  %4640 = load double, ptr %4639, align 8, !tbaa !43
  %4641 = tail call noundef double @llvm.fmuladd.f64(double %4640, double %4576, double %4561)
  %4642 = fcmp ogt double %4641, %4628
  br i1 %4642, label %4643, label %4655

4643:                                             ; preds = %4635
  %4644 = fcmp ogt double %4638, %4641
  br i1 %4644, label %4645, label %4650

4645:                                             ; preds = %4643
  %4646 = getelementptr <2 x double>, ptr %4634, i64 %4636
  %4647 = load double, ptr %4646, align 8, !tbaa !43
  %4648 = fsub double %4638, %4641
  %4649 = tail call double @llvm.fmuladd.f64(double %4647, double %4648, double %4637)
  br label %4650

4650:                                             ; preds = %4645, %4643
  %4651 = phi double [ %4641, %4645 ], [ %4638, %4643 ]
  %4652 = phi double [ %4649, %4645 ], [ %4637, %4643 ]
  %4653 = add nsw i64 %4636, -1
  %4654 = icmp sgt i64 %4653, %4559
  br i1 %4654, label %4635, label %4655, !llvm.loop !141

4655:                                             ; preds = %4650, %4635, %4627
  %4656 = phi double [ %4629, %4627 ], [ %4638, %4635 ], [ %4651, %4650 ]
  %4657 = phi double [ 0.000000e+00, %4627 ], [ %4637, %4635 ], [ %4652, %4650 ]
  %4658 = phi i64 [ %4630, %4627 ], [ %4636, %4635 ], [ %4559, %4650 ]
  %4659 = getelementptr <2 x double>, ptr %4578, i64 %4658
  %4660 = load double, ptr %4659, align 8, !tbaa !43
  %4661 = fsub double %4656, %4628
  %4662 = tail call double @llvm.fmuladd.f64(double %4660, double %4661, double %4657)
  %4663 = fsub double %4629, %4628
  %4664 = fdiv double %4662, %4663
  %4665 = getelementptr <2 x double>, ptr %4580, i64 %4611
  store double %4664, ptr %4665, align 8, !tbaa !43
  %4666 = fadd double %4610, %4662
  %4667 = add nsw i64 %4611, -1
  %4668 = icmp sgt i64 %4611, %4559
  br i1 %4668, label %4609, label %4582, !llvm.loop !142

4669:                                             ; preds = %4669, %4607
  %4670 = phi i64 [ %4605, %4607 ], [ %4685, %4669 ]
  %4671 = load double, ptr %4589, align 8, !tbaa !43
  %4672 = load double, ptr %4590, align 8, !tbaa !43
  %4673 = fmul double %4666, %4672
  %4674 = fdiv double %4671, %4673
  %4675 = getelementptr <2 x double>, ptr %4580, i64 %4670
  %4676 = load double, ptr %4675, align 8, !tbaa !43
  %4677 = fmul double %4676, %4674
  store double %4677, ptr %4675, align 8, !tbaa !43
  %4678 = load double, ptr %4589, align 8, !tbaa !43
  %4679 = load double, ptr %4590, align 8, !tbaa !43
  %4680 = fmul double %4666, %4679
  %4681 = fdiv double %4678, %4680
  %4682 = getelementptr <2 x double>, ptr %4608, i64 %4670
  %4683 = load double, ptr %4682, align 8, !tbaa !43
  %4684 = fmul double %4683, %4681
  store double %4684, ptr %4682, align 8, !tbaa !43
  %4685 = add nsw i64 %4670, 2
  %4686 = icmp eq i64 %4685, %4558
  br i1 %4686, label %4687, label %4669, !llvm.loop !143

4687:                                             ; preds = %4604, %4669, %4582, %4557, %4552
  br i1 %4553, label %4552, label %4688, !llvm.loop !144

4688:                                             ; preds = %4511, %4687, %4423
  %4689 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %4690 = and <2 x i64> %4689, %4422
  %4691 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4690)
  %4692 = icmp eq i64 %4691, 0
  %4693 = getelementptr inbounds nuw i8, ptr %4426, i64 2136
  br i1 %4692, label %4694, label %4712

4694:                                             ; preds = %4688
  %4695 = getelementptr inbounds nuw i8, ptr %4426, i64 2144
  %4696 = getelementptr inbounds nuw i8, ptr %4426, i64 2152
  %4697 = load ptr, ptr %4696, align 8, !tbaa !35
  %4698 = load ptr, ptr %4695, align 8, !tbaa !35
  store ptr %4698, ptr %4696, align 8, !tbaa !35
  %4699 = load ptr, ptr %4693, align 8, !tbaa !35
  store ptr %4699, ptr %4695, align 8, !tbaa !35
  store ptr %4697, ptr %4693, align 8, !tbaa !35
  %4700 = getelementptr inbounds nuw i8, ptr %4426, i64 2256
  %4701 = getelementptr inbounds nuw i8, ptr %4426, i64 2264
  %4702 = getelementptr inbounds nuw i8, ptr %4426, i64 2272
  %4703 = load ptr, ptr %4702, align 8, !tbaa !35
  %4704 = load ptr, ptr %4701, align 8, !tbaa !35
  store ptr %4704, ptr %4702, align 8, !tbaa !35
  %4705 = load ptr, ptr %4700, align 8, !tbaa !35
  store ptr %4705, ptr %4701, align 8, !tbaa !35
  store ptr %4703, ptr %4700, align 8, !tbaa !35
  %4706 = getelementptr inbounds nuw i8, ptr %4426, i64 2304
  %4707 = getelementptr inbounds nuw i8, ptr %4426, i64 2312
  %4708 = getelementptr inbounds nuw i8, ptr %4426, i64 2320
  %4709 = load ptr, ptr %4708, align 8, !tbaa !35
  %4710 = load ptr, ptr %4707, align 8, !tbaa !35
  store ptr %4710, ptr %4708, align 8, !tbaa !35
  %4711 = load ptr, ptr %4706, align 8, !tbaa !35
  store ptr %4711, ptr %4707, align 8, !tbaa !35
  store ptr %4709, ptr %4706, align 8, !tbaa !35
  br label %4777

4712:                                             ; preds = %4688
  %4713 = load ptr, ptr %4693, align 8, !tbaa !58
  %4714 = getelementptr inbounds nuw i8, ptr %4426, i64 2144
  %4715 = load ptr, ptr %4714, align 16, !tbaa !47
  %4716 = getelementptr inbounds nuw i8, ptr %4426, i64 2152
  %4717 = load ptr, ptr %4716, align 8, !tbaa !57
  %4718 = load i64, ptr %132, align 16, !tbaa !21
  %4719 = icmp sgt i64 %4718, 0
  br i1 %4719, label %4720, label %4733

4720:                                             ; preds = %4712, %4720
  %4721 = phi i64 [ %4731, %4720 ], [ 0, %4712 ]
  %4722 = getelementptr inbounds nuw <2 x double>, ptr %4717, i64 %4721
  %4723 = getelementptr inbounds nuw <2 x double>, ptr %4715, i64 %4721
  %4724 = load <2 x double>, ptr %4723, align 16, !tbaa !26
  %4725 = load <2 x double>, ptr %4722, align 16, !tbaa !26
  %4726 = select <2 x i1> %4394, <2 x double> %4725, <2 x double> %4724
  store <2 x double> %4726, ptr %4722, align 16, !tbaa !26
  %4727 = getelementptr inbounds nuw <2 x double>, ptr %4713, i64 %4721
  %4728 = load <2 x double>, ptr %4727, align 16, !tbaa !26
  %4729 = load <2 x double>, ptr %4723, align 16, !tbaa !26
  %4730 = select <2 x i1> %4394, <2 x double> %4729, <2 x double> %4728
  store <2 x double> %4730, ptr %4723, align 16, !tbaa !26
  %4731 = add nuw nsw i64 %4721, 1
  %4732 = icmp eq i64 %4731, %4718
  br i1 %4732, label %4733, label %4720, !llvm.loop !145

4733:                                             ; preds = %4720, %4712
  %4734 = getelementptr inbounds nuw i8, ptr %4426, i64 2256
  %4735 = load ptr, ptr %4734, align 16, !tbaa !125
  %4736 = getelementptr inbounds nuw i8, ptr %4426, i64 2264
  %4737 = load ptr, ptr %4736, align 8, !tbaa !51
  %4738 = getelementptr inbounds nuw i8, ptr %4426, i64 2272
  %4739 = load ptr, ptr %4738, align 16, !tbaa !62
  %4740 = load i64, ptr %133, align 8, !tbaa !22
  %4741 = icmp sgt i64 %4740, 0
  br i1 %4741, label %4742, label %4777

4742:                                             ; preds = %4733, %4742
  %4743 = phi i64 [ %4753, %4742 ], [ 0, %4733 ]
  %4744 = getelementptr inbounds nuw <2 x double>, ptr %4739, i64 %4743
  %4745 = getelementptr inbounds nuw <2 x double>, ptr %4737, i64 %4743
  %4746 = load <2 x double>, ptr %4745, align 16, !tbaa !26
  %4747 = load <2 x double>, ptr %4744, align 16, !tbaa !26
  %4748 = select <2 x i1> %4394, <2 x double> %4747, <2 x double> %4746
  store <2 x double> %4748, ptr %4744, align 16, !tbaa !26
  %4749 = getelementptr inbounds nuw <2 x double>, ptr %4735, i64 %4743
  %4750 = load <2 x double>, ptr %4749, align 16, !tbaa !26
  %4751 = load <2 x double>, ptr %4745, align 16, !tbaa !26
  %4752 = select <2 x i1> %4394, <2 x double> %4751, <2 x double> %4750
  store <2 x double> %4752, ptr %4745, align 16, !tbaa !26
  %4753 = add nuw nsw i64 %4743, 1
  %4754 = icmp eq i64 %4753, %4740
  br i1 %4754, label %4755, label %4742, !llvm.loop !145

4755:                                             ; preds = %4742
  %4756 = load i64, ptr %133, align 8, !tbaa !22
  %4757 = getelementptr inbounds nuw i8, ptr %4426, i64 2304
  %4758 = load ptr, ptr %4757, align 16, !tbaa !88
  %4759 = getelementptr inbounds nuw i8, ptr %4426, i64 2312
  %4760 = load ptr, ptr %4759, align 8, !tbaa !50
  %4761 = getelementptr inbounds nuw i8, ptr %4426, i64 2320
  %4762 = load ptr, ptr %4761, align 16, !tbaa !60
  %4763 = icmp sgt i64 %4756, 0
  br i1 %4763, label %4764, label %4777

4764:                                             ; preds = %4755, %4764
  %4765 = phi i64 [ %4775, %4764 ], [ 0, %4755 ]
  %4766 = getelementptr inbounds nuw <2 x double>, ptr %4762, i64 %4765
  %4767 = getelementptr inbounds nuw <2 x double>, ptr %4760, i64 %4765
  %4768 = load <2 x double>, ptr %4767, align 16, !tbaa !26
  %4769 = load <2 x double>, ptr %4766, align 16, !tbaa !26
  %4770 = select <2 x i1> %4394, <2 x double> %4769, <2 x double> %4768
  store <2 x double> %4770, ptr %4766, align 16, !tbaa !26
  %4771 = getelementptr inbounds nuw <2 x double>, ptr %4758, i64 %4765
  %4772 = load <2 x double>, ptr %4771, align 16, !tbaa !26
  %4773 = load <2 x double>, ptr %4767, align 16, !tbaa !26
  %4774 = select <2 x i1> %4394, <2 x double> %4773, <2 x double> %4772
  store <2 x double> %4774, ptr %4767, align 16, !tbaa !26
  %4775 = add nuw nsw i64 %4765, 1
  %4776 = icmp eq i64 %4775, %4756
  br i1 %4776, label %4777, label %4764, !llvm.loop !145

4777:                                             ; preds = %4764, %4733, %4755, %4694
  %4778 = getelementptr inbounds nuw i8, ptr %4426, i64 1184
  %4779 = getelementptr inbounds nuw i8, ptr %4426, i64 960
  %4780 = getelementptr inbounds nuw i8, ptr %4426, i64 736
  br label %4796

4781:                                             ; preds = %4796
  %4782 = getelementptr inbounds nuw i8, ptr %4426, i64 2096
  %4783 = getelementptr inbounds nuw i8, ptr %4426, i64 1520
  %4784 = load <2 x double>, ptr %4783, align 16, !tbaa !26
  %4785 = fcmp ogt <2 x double> %4784, zeroinitializer
  %4786 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %4787 = fcmp une <2 x double> %4786, splat (double 2.000000e+00)
  %4788 = and <2 x i1> %4785, %4787
  %4789 = select <2 x i1> %4788, <2 x i64> %4334, <2 x i64> zeroinitializer
  %4790 = load <2 x i64>, ptr %4782, align 16, !tbaa !26
  %4791 = and <2 x i64> %4790, %4422
  %4792 = or disjoint <2 x i64> %4789, %4791
  store <2 x i64> %4792, ptr %4782, align 16, !tbaa !26
  %4793 = add nuw nsw i64 %4424, 1
  %4794 = load i64, ptr %169, align 8, !tbaa !20
  %4795 = icmp slt i64 %4793, %4794
  br i1 %4795, label %4423, label %4817, !llvm.loop !146

4796:                                             ; preds = %4796, %4777
  %4797 = phi i64 [ 0, %4777 ], [ %4815, %4796 ]
  %4798 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4778, i64 0, i64 %4797
  %4799 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4779, i64 0, i64 %4797
  %4800 = load <2 x double>, ptr %4799, align 16, !tbaa !26
  %4801 = load <2 x double>, ptr %4798, align 16, !tbaa !26
  %4802 = select <2 x i1> %4394, <2 x double> %4801, <2 x double> %4800
  store <2 x double> %4802, ptr %4798, align 16, !tbaa !26
  %4803 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4780, i64 0, i64 %4797
  %4804 = load <2 x double>, ptr %4803, align 16, !tbaa !26
  %4805 = select <2 x i1> %4394, <2 x double> %4800, <2 x double> %4804
  store <2 x double> %4805, ptr %4799, align 16, !tbaa !26
  %4806 = or disjoint i64 %4797, 1
  %4807 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4778, i64 0, i64 %4806
  %4808 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4779, i64 0, i64 %4806
  %4809 = load <2 x double>, ptr %4808, align 16, !tbaa !26
  %4810 = load <2 x double>, ptr %4807, align 16, !tbaa !26
  %4811 = select <2 x i1> %4394, <2 x double> %4810, <2 x double> %4809
  store <2 x double> %4811, ptr %4807, align 16, !tbaa !26
  %4812 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4780, i64 0, i64 %4806
  %4813 = load <2 x double>, ptr %4812, align 16, !tbaa !26
  %4814 = select <2 x i1> %4394, <2 x double> %4809, <2 x double> %4813
  store <2 x double> %4814, ptr %4808, align 16, !tbaa !26
  %4815 = add nuw nsw i64 %4797, 2
  %4816 = icmp eq i64 %4815, 14
  br i1 %4816, label %4781, label %4796, !llvm.loop !147

4817:                                             ; preds = %4781
  %4818 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4819 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4820 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4821 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %4822 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4823 = fdiv <2 x double> %4820, %4032
  %4824 = icmp sgt i64 %4794, 0
  br label %4825

4825:                                             ; preds = %4393, %4817
  %4826 = phi <2 x double> [ %4823, %4817 ], [ %4042, %4393 ]
  %4827 = phi i1 [ %4824, %4817 ], [ false, %4393 ]
  %4828 = phi <2 x double> [ %4822, %4817 ], [ %4021, %4393 ]
  %4829 = phi <2 x double> [ %4821, %4817 ], [ %4322, %4393 ]
  %4830 = phi <2 x double> [ %4819, %4817 ], [ %4038, %4393 ]
  %4831 = phi <2 x double> [ %4818, %4817 ], [ %4036, %4393 ]
  %4832 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4833 = fadd <2 x double> %4832, %4831
  %4834 = select <2 x i1> %4394, <2 x double> %4832, <2 x double> %4833
  store <2 x double> %4834, ptr %149, align 16, !tbaa !26
  %4835 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %4836 = select <2 x i1> %4394, <2 x double> %4835, <2 x double> %4831
  store <2 x double> %4836, ptr %164, align 16, !tbaa !26
  %4837 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4838 = fadd <2 x double> %4837, splat (double 1.000000e+00)
  %4839 = select <2 x i1> %4394, <2 x double> %4837, <2 x double> %4838
  store <2 x double> %4839, ptr %136, align 16, !tbaa !26
  %4840 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %4841 = fcmp olt <2 x double> %4840, %4831
  %4842 = select <2 x i1> %4394, <2 x i1> splat (i1 true), <2 x i1> %4841
  %4843 = select <2 x i1> %4842, <2 x double> %4840, <2 x double> %4831
  store <2 x double> %4843, ptr %138, align 16, !tbaa !26
  %4844 = fcmp une <2 x double> %4830, zeroinitializer
  %4845 = fcmp ueq <2 x double> %4031, zeroinitializer
  %4846 = or <2 x i1> %4845, %4844
  %4847 = fcmp olt <2 x double> %4826, splat (double 1.800000e+00)
  %4848 = select <2 x i1> %4847, <2 x double> %4826, <2 x double> splat (double 1.800000e+00)
  %4849 = select <2 x i1> %4846, <2 x double> splat (double 1.800000e+00), <2 x double> %4848
  %4850 = fcmp ogt <2 x double> %4849, splat (double 2.000000e-01)
  %4851 = select <2 x i1> %4850, <2 x double> %4849, <2 x double> splat (double 2.000000e-01)
  %4852 = fmul <2 x double> %4831, %4851
  %4853 = fmul <2 x double> %4831, splat (double 4.000000e+00)
  %4854 = fcmp olt <2 x double> %4829, %4853
  %4855 = select <2 x i1> %4854, <2 x double> %4829, <2 x double> %4853
  %4856 = fcmp ogt <2 x double> %4852, %4855
  %4857 = select <2 x i1> %4856, <2 x double> %4852, <2 x double> %4855
  %4858 = select <2 x i1> %4394, <2 x double> %4829, <2 x double> zeroinitializer
  store <2 x double> %4858, ptr %172, align 16, !tbaa !26
  %4859 = select <2 x i1> %4394, <2 x double> %4828, <2 x double> zeroinitializer
  store <2 x double> %4859, ptr %174, align 16, !tbaa !26
  %4860 = load <2 x i64>, ptr %165, align 16, !tbaa !26
  %4861 = and <2 x i64> %4860, %4422
  store <2 x i64> %4861, ptr %165, align 16, !tbaa !26
  %4862 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %4863 = and <2 x i64> %4862, %4422
  store <2 x i64> %4863, ptr %166, align 16, !tbaa !26
  %4864 = load <2 x double>, ptr %210, align 16, !tbaa !26
  %4865 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %4866 = select <2 x i1> %4394, <2 x double> %4865, <2 x double> %4864
  store <2 x double> %4866, ptr %159, align 16, !tbaa !26
  br i1 %4827, label %4867, label %5331

4867:                                             ; preds = %4825, %5324
  %4868 = phi i64 [ %5326, %5324 ], [ 0, %4825 ]
  %4869 = phi <2 x double> [ %5325, %5324 ], [ %4857, %4825 ]
  %4870 = load ptr, ptr %142, align 8, !tbaa !28
  %4871 = getelementptr inbounds nuw %struct.Piece, ptr %4870, i64 %4868
  %4872 = getelementptr inbounds nuw i8, ptr %4871, i64 976
  %4873 = load <2 x double>, ptr %4872, align 16, !tbaa !26
  %4874 = getelementptr inbounds nuw i8, ptr %4871, i64 368
  %4875 = load <2 x double>, ptr %4874, align 16, !tbaa !26
  %4876 = fmul <2 x double> %4875, splat (double 1.001000e+00)
  %4877 = fcmp ole <2 x double> %4873, %4876
  %4878 = getelementptr inbounds nuw i8, ptr %4871, i64 400
  %4879 = load <2 x double>, ptr %4878, align 16, !tbaa !26
  %4880 = getelementptr inbounds nuw i8, ptr %4871, i64 1040
  %4881 = load <2 x double>, ptr %4880, align 16, !tbaa !26
  %4882 = fsub <2 x double> %4879, %4881
  %4883 = fmul <2 x double> %4879, splat (double 1.000000e-04)
  %4884 = fcmp ole <2 x double> %4882, %4883
  %4885 = getelementptr inbounds nuw i8, ptr %4871, i64 2080
  %4886 = load <2 x i64>, ptr %4885, align 16, !tbaa !26
  %4887 = and <2 x i64> %4886, %4334
  %4888 = getelementptr inbounds nuw i8, ptr %4871, i64 1920
  %4889 = load <2 x double>, ptr %4888, align 16, !tbaa !26
  %4890 = fcmp oeq <2 x double> %4889, zeroinitializer
  %4891 = and <2 x i1> %4877, %4890
  %4892 = fcmp oeq <2 x double> %4889, splat (double 1.000000e+00)
  %4893 = and <2 x i1> %4884, %4892
  %4894 = or <2 x i1> %4891, %4893
  %4895 = select <2 x i1> %4894, <2 x i64> %4887, <2 x i64> zeroinitializer
  %4896 = fadd <2 x double> %4889, splat (double 1.000000e+00)
  %4897 = icmp eq <2 x i64> %4895, zeroinitializer
  %4898 = select <2 x i1> %4897, <2 x double> %4889, <2 x double> %4896
  store <2 x double> %4898, ptr %4888, align 16, !tbaa !26
  %4899 = getelementptr inbounds nuw i8, ptr %4871, i64 2096
  %4900 = load <2 x i64>, ptr %4899, align 16, !tbaa !26
  %4901 = or <2 x i64> %4895, %4900
  store <2 x i64> %4901, ptr %4899, align 16, !tbaa !26
  %4902 = getelementptr inbounds nuw i8, ptr %4871, i64 224
  %4903 = load <2 x double>, ptr %4902, align 16, !tbaa !26
  %4904 = getelementptr inbounds nuw i8, ptr %4871, i64 1504
  %4905 = load <2 x double>, ptr %4904, align 16, !tbaa !26
  %4906 = getelementptr inbounds nuw i8, ptr %4871, i64 1520
  %4907 = load <2 x double>, ptr %4906, align 16, !tbaa !26
  %4908 = fadd <2 x double> %4905, %4907
  %4909 = fcmp ogt <2 x double> %4908, zeroinitializer
  %4910 = xor <2 x i64> %4886, splat (i64 -1)
  %4911 = and <2 x i64> %4334, %4910
  %4912 = fcmp une <2 x double> %4903, zeroinitializer
  %4913 = or <2 x i1> %4912, %4909
  %4914 = getelementptr inbounds nuw i8, ptr %4871, i64 992
  %4915 = load <2 x double>, ptr %4914, align 16, !tbaa !26
  %4916 = fmul <2 x double> %4903, splat (double 3.000000e-03)
  %4917 = fcmp ogt <2 x double> %4916, splat (double 0x3E7AD7F29ABCAF48)
  %4918 = select <2 x i1> %4917, <2 x double> %4916, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4919 = fcmp ole <2 x double> %4915, %4918
  %4920 = select <2 x i1> %4919, <2 x i1> %4913, <2 x i1> zeroinitializer
  %4921 = select <2 x i1> %4920, <2 x i64> %4911, <2 x i64> zeroinitializer
  %4922 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4921)
  %4923 = icmp eq i64 %4922, 0
  br i1 %4923, label %5324, label %4924

4924:                                             ; preds = %4867
  %4925 = load i64, ptr %132, align 16, !tbaa !21
  %4926 = load i64, ptr %133, align 8, !tbaa !22
  %4927 = getelementptr inbounds nuw i8, ptr %4871, i64 960
  %4928 = getelementptr inbounds nuw i8, ptr %4871, i64 1168
  %4929 = load <2 x double>, ptr %4928, align 16, !tbaa !26
  %4930 = getelementptr inbounds nuw i8, ptr %4871, i64 1488
  %4931 = load <2 x double>, ptr %4930, align 16, !tbaa !26
  %4932 = getelementptr inbounds nuw i8, ptr %4871, i64 208
  %4933 = load <2 x double>, ptr %4932, align 16, !tbaa !26
  %4934 = getelementptr inbounds nuw i8, ptr %4871, i64 2176
  %4935 = load ptr, ptr %4934, align 16, !tbaa !48
  %4936 = add nsw i64 %4925, -1
  %4937 = getelementptr inbounds <2 x double>, ptr %4935, i64 %4936
  %4938 = load <2 x double>, ptr %4937, align 16, !tbaa !26
  %4939 = fmul <2 x double> %4933, %4938
  %4940 = fneg <2 x double> %4915
  %4941 = fdiv <2 x double> %4940, %4939
  %4942 = fcmp ogt <2 x double> %4941, splat (double 0x3E7AD7F29ABCAF48)
  %4943 = select <2 x i1> %4942, <2 x double> %4941, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4944 = load <2 x double>, ptr %4871, align 16, !tbaa !26
  %4945 = fsub <2 x double> %4944, %4943
  %4946 = getelementptr inbounds nuw i8, ptr %4871, i64 640
  %4947 = load <2 x double>, ptr %4946, align 16, !tbaa !26
  %4948 = getelementptr inbounds nuw i8, ptr %4871, i64 656
  %4949 = load <2 x double>, ptr %4948, align 16, !tbaa !26
  %4950 = getelementptr inbounds nuw i8, ptr %4871, i64 672
  %4951 = load <2 x double>, ptr %4950, align 16, !tbaa !26
  %4952 = getelementptr inbounds nuw i8, ptr %4871, i64 688
  %4953 = load <2 x double>, ptr %4952, align 16, !tbaa !26
  %4954 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4945, <2 x double> %4953, <2 x double> %4951)
  %4955 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4945, <2 x double> %4954, <2 x double> %4949)
  %4956 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4945, <2 x double> %4955, <2 x double> %4947)
  %4957 = fsub <2 x double> %4929, %4956
  %4958 = getelementptr inbounds nuw i8, ptr %4871, i64 2144
  %4959 = load ptr, ptr %4958, align 16, !tbaa !47
  %4960 = getelementptr inbounds <2 x double>, ptr %4959, i64 %4936
  %4961 = load <2 x double>, ptr %4960, align 16, !tbaa !26
  %4962 = getelementptr inbounds nuw i8, ptr %4871, i64 2128
  %4963 = load i64, ptr %4962, align 16, !tbaa !31
  %4964 = icmp sgt i64 %4925, %4963
  br i1 %4964, label %4973, label %4965

4965:                                             ; preds = %4924
  %4966 = getelementptr inbounds nuw i8, ptr %4871, i64 160
  %4967 = load <2 x double>, ptr %4966, align 16, !tbaa !26
  %4968 = getelementptr inbounds nuw i8, ptr %4871, i64 2152
  %4969 = load ptr, ptr %4968, align 8, !tbaa !57
  %4970 = getelementptr inbounds <2 x double>, ptr %4969, i64 %4936
  %4971 = load <2 x double>, ptr %4970, align 16, !tbaa !26
  %4972 = fmul <2 x double> %4971, %4967
  br label %4993

4973:                                             ; preds = %4924
  %4974 = getelementptr inbounds nuw i8, ptr %4871, i64 96
  %4975 = load <2 x double>, ptr %4974, align 16, !tbaa !26
  %4976 = getelementptr inbounds nuw i8, ptr %4871, i64 112
  %4977 = load <2 x double>, ptr %4976, align 16, !tbaa !26
  %4978 = getelementptr inbounds nuw i8, ptr %4871, i64 128
  %4979 = load <2 x double>, ptr %4978, align 16, !tbaa !26
  %4980 = fmul <2 x double> %4961, %4979
  %4981 = fmul <2 x double> %4980, splat (double 0x3FD5555555555555)
  %4982 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4977, <2 x double> splat (double 5.000000e-01), <2 x double> %4981)
  %4983 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4961, <2 x double> %4982, <2 x double> %4975)
  %4984 = getelementptr inbounds nuw i8, ptr %4871, i64 2152
  %4985 = load ptr, ptr %4984, align 8, !tbaa !57
  %4986 = getelementptr inbounds <2 x double>, ptr %4985, i64 %4936
  %4987 = load <2 x double>, ptr %4986, align 16, !tbaa !26
  %4988 = fmul <2 x double> %4987, %4979
  %4989 = fmul <2 x double> %4988, splat (double 0x3FD5555555555555)
  %4990 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4977, <2 x double> splat (double 5.000000e-01), <2 x double> %4989)
  %4991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4987, <2 x double> %4990, <2 x double> %4975)
  %4992 = fmul <2 x double> %4987, %4991
  br label %4993

4993:                                             ; preds = %4973, %4965
  %4994 = phi ptr [ %4985, %4973 ], [ %4969, %4965 ]
  %4995 = phi <2 x double> [ %4983, %4973 ], [ %4967, %4965 ]
  %4996 = phi <2 x double> [ %4992, %4973 ], [ %4972, %4965 ]
  %4997 = phi ptr [ %4984, %4973 ], [ %4968, %4965 ]
  %4998 = sitofp i64 %4926 to double
  %4999 = insertelement <2 x double> poison, double %4998, i64 0
  %5000 = shufflevector <2 x double> %4999, <2 x double> poison, <2 x i32> zeroinitializer
  %5001 = fmul <2 x double> %4961, %4995
  %5002 = fdiv <2 x double> %4943, %5000
  %5003 = getelementptr i8, ptr %4959, i64 -16
  %5004 = getelementptr i8, ptr %4935, i64 -16
  %5005 = icmp sgt i64 %4925, 0
  br i1 %5005, label %5006, label %5107

5006:                                             ; preds = %4993
  %5007 = fmul <2 x double> %4961, %4995
  %5008 = getelementptr inbounds nuw i8, ptr %4871, i64 160
  %5009 = getelementptr inbounds nuw i8, ptr %4871, i64 96
  %5010 = getelementptr inbounds nuw i8, ptr %4871, i64 112
  %5011 = getelementptr inbounds nuw i8, ptr %4871, i64 128
  %5012 = getelementptr inbounds nuw i8, ptr %4871, i64 384
  %5013 = getelementptr inbounds nuw i8, ptr %4871, i64 2224
  %5014 = icmp eq <2 x i64> %4921, zeroinitializer
  br label %5015

5015:                                             ; preds = %5006, %5094
  %5016 = phi <2 x double> [ %4961, %5006 ], [ %5075, %5094 ]
  %5017 = phi <2 x double> [ %5007, %5006 ], [ %5074, %5094 ]
  %5018 = phi <2 x double> [ %4956, %5006 ], [ %5076, %5094 ]
  %5019 = phi <2 x double> [ %4938, %5006 ], [ %5077, %5094 ]
  %5020 = phi i64 [ %4936, %5006 ], [ %5100, %5094 ]
  %5021 = icmp eq i64 %5020, 0
  br i1 %5021, label %5022, label %5026

5022:                                             ; preds = %5015
  %5023 = fdiv <2 x double> zeroinitializer, %5018
  %5024 = fsub <2 x double> %5017, %5017
  %5025 = fmul <2 x double> %5023, %5024
  br label %5071

5026:                                             ; preds = %5015
  %5027 = getelementptr <2 x double>, ptr %5003, i64 %5020
  %5028 = load <2 x double>, ptr %5027, align 16, !tbaa !26
  %5029 = load i64, ptr %4962, align 16, !tbaa !31
  %5030 = icmp sgt i64 %5020, %5029
  br i1 %5030, label %5033, label %5031

5031:                                             ; preds = %5026
  %5032 = load <2 x double>, ptr %5008, align 16, !tbaa !26
  br label %5041

5033:                                             ; preds = %5026
  %5034 = load <2 x double>, ptr %5009, align 16, !tbaa !26
  %5035 = load <2 x double>, ptr %5010, align 16, !tbaa !26
  %5036 = load <2 x double>, ptr %5011, align 16, !tbaa !26
  %5037 = fmul <2 x double> %5028, %5036
  %5038 = fmul <2 x double> %5037, splat (double 0x3FD5555555555555)
  %5039 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5035, <2 x double> splat (double 5.000000e-01), <2 x double> %5038)
  %5040 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5028, <2 x double> %5039, <2 x double> %5034)
  br label %5041

5041:                                             ; preds = %5031, %5033
  %5042 = phi <2 x double> [ %5040, %5033 ], [ %5032, %5031 ]
  %5043 = fmul <2 x double> %5028, %5042
  %5044 = icmp slt i64 %5020, %5029
  br i1 %5044, label %5045, label %5052

5045:                                             ; preds = %5041
  %5046 = load ptr, ptr %5013, align 16, !tbaa !73
  %5047 = getelementptr inbounds nuw <2 x double>, ptr %5046, i64 %5020
  %5048 = load <2 x double>, ptr %5047, align 16, !tbaa !26
  %5049 = load <2 x double>, ptr %5012, align 16, !tbaa !26
  %5050 = fmul <2 x double> %5048, %5049
  %5051 = fmul <2 x double> %5048, %5049
  br label %5061

5052:                                             ; preds = %5041
  %5053 = load <2 x double>, ptr %5012, align 16, !tbaa !26
  %5054 = load ptr, ptr %5013, align 16, !tbaa !73
  %5055 = getelementptr inbounds nuw <2 x double>, ptr %5054, i64 %5020
  %5056 = load <2 x double>, ptr %5055, align 16, !tbaa !26
  %5057 = fsub <2 x double> %4956, %5053
  %5058 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5056, <2 x double> %5057, <2 x double> %5053)
  %5059 = fsub <2 x double> %4929, %5053
  %5060 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5056, <2 x double> %5059, <2 x double> %5053)
  br label %5061

5061:                                             ; preds = %5052, %5045
  %5062 = phi <2 x double> [ %5050, %5045 ], [ %5058, %5052 ]
  %5063 = phi <2 x double> [ %5051, %5045 ], [ %5060, %5052 ]
  %5064 = fsub <2 x double> %5063, %5062
  %5065 = fsub <2 x double> %5018, %5062
  %5066 = fdiv <2 x double> %5064, %5065
  %5067 = fsub <2 x double> %5043, %5017
  %5068 = fmul <2 x double> %5067, %5066
  %5069 = getelementptr <2 x double>, ptr %5004, i64 %5020
  %5070 = load <2 x double>, ptr %5069, align 16, !tbaa !26
  br label %5071

5071:                                             ; preds = %5061, %5022
  %5072 = phi <2 x double> [ %5068, %5061 ], [ %5025, %5022 ]
  %5073 = phi <2 x double> [ %5066, %5061 ], [ %5023, %5022 ]
  %5074 = phi <2 x double> [ %5043, %5061 ], [ %5017, %5022 ]
  %5075 = phi <2 x double> [ %5028, %5061 ], [ %5016, %5022 ]
  %5076 = phi <2 x double> [ %5062, %5061 ], [ zeroinitializer, %5022 ]
  %5077 = phi <2 x double> [ %5070, %5061 ], [ %5019, %5022 ]
  %5078 = getelementptr inbounds nuw <2 x double>, ptr %4935, i64 %5020
  %5079 = fsub <2 x double> %5077, %5019
  %5080 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5079, <2 x double> %5073, <2 x double> %5019)
  %5081 = load <2 x double>, ptr %5078, align 16, !tbaa !26
  %5082 = select <2 x i1> %5014, <2 x double> %5081, <2 x double> %5080
  store <2 x double> %5082, ptr %5078, align 16, !tbaa !26
  %5083 = getelementptr inbounds nuw <2 x double>, ptr %4959, i64 %5020
  %5084 = load i64, ptr %4962, align 16, !tbaa !31
  %5085 = icmp slt i64 %5020, %5084
  br i1 %5085, label %5086, label %5088

5086:                                             ; preds = %5071
  %5087 = load <2 x double>, ptr %5008, align 16, !tbaa !26
  br label %5094

5088:                                             ; preds = %5071
  %5089 = load <2 x double>, ptr %5009, align 16, !tbaa !26
  %5090 = load <2 x double>, ptr %5010, align 16, !tbaa !26
  %5091 = load <2 x double>, ptr %5011, align 16, !tbaa !26
  %5092 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5016, <2 x double> %5091, <2 x double> %5090)
  %5093 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5016, <2 x double> %5092, <2 x double> %5089)
  br label %5094

5094:                                             ; preds = %5088, %5086
  %5095 = phi <2 x double> [ %5087, %5086 ], [ %5093, %5088 ]
  %5096 = fdiv <2 x double> %5072, %5095
  %5097 = fadd <2 x double> %5016, %5096
  %5098 = load <2 x double>, ptr %5083, align 16, !tbaa !26
  %5099 = select <2 x i1> %5014, <2 x double> %5098, <2 x double> %5097
  store <2 x double> %5099, ptr %5083, align 16, !tbaa !26
  %5100 = add nsw i64 %5020, -1
  %5101 = icmp sgt i64 %5020, 0
  br i1 %5101, label %5015, label %5102, !llvm.loop !148

5102:                                             ; preds = %5094
  %5103 = load ptr, ptr %4997, align 8, !tbaa !57
  %5104 = load i64, ptr %132, align 16, !tbaa !21
  %5105 = load i64, ptr %4962, align 16, !tbaa !31
  %5106 = add nsw i64 %5104, -1
  br label %5107

5107:                                             ; preds = %5102, %4993
  %5108 = phi i64 [ %5106, %5102 ], [ %4936, %4993 ]
  %5109 = phi i64 [ %5105, %5102 ], [ %4963, %4993 ]
  %5110 = phi i64 [ %5104, %5102 ], [ %4925, %4993 ]
  %5111 = phi ptr [ %5103, %5102 ], [ %4994, %4993 ]
  %5112 = getelementptr inbounds <2 x double>, ptr %5111, i64 %5108
  %5113 = load <2 x double>, ptr %5112, align 16, !tbaa !26
  %5114 = icmp sgt i64 %5110, %5109
  br i1 %5114, label %5118, label %5115

5115:                                             ; preds = %5107
  %5116 = getelementptr inbounds nuw i8, ptr %4871, i64 160
  %5117 = load <2 x double>, ptr %5116, align 16, !tbaa !26
  br label %5129

5118:                                             ; preds = %5107
  %5119 = getelementptr inbounds nuw i8, ptr %4871, i64 96
  %5120 = load <2 x double>, ptr %5119, align 16, !tbaa !26
  %5121 = getelementptr inbounds nuw i8, ptr %4871, i64 112
  %5122 = load <2 x double>, ptr %5121, align 16, !tbaa !26
  %5123 = getelementptr inbounds nuw i8, ptr %4871, i64 128
  %5124 = load <2 x double>, ptr %5123, align 16, !tbaa !26
  %5125 = fmul <2 x double> %5113, %5124
  %5126 = fmul <2 x double> %5125, splat (double 0x3FD5555555555555)
  %5127 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5122, <2 x double> splat (double 5.000000e-01), <2 x double> %5126)
  %5128 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5113, <2 x double> %5127, <2 x double> %5120)
  br label %5129

5129:                                             ; preds = %5118, %5115
  %5130 = phi <2 x double> [ %5117, %5115 ], [ %5128, %5118 ]
  %5131 = getelementptr i8, ptr %5111, i64 -16
  %5132 = icmp sgt i64 %5110, 0
  br i1 %5132, label %5133, label %5142

5133:                                             ; preds = %5129
  %5134 = fmul <2 x double> %5113, %5130
  %5135 = getelementptr inbounds nuw i8, ptr %4871, i64 160
  %5136 = getelementptr inbounds nuw i8, ptr %4871, i64 96
  %5137 = getelementptr inbounds nuw i8, ptr %4871, i64 112
  %5138 = getelementptr inbounds nuw i8, ptr %4871, i64 128
  %5139 = getelementptr inbounds nuw i8, ptr %4871, i64 384
  %5140 = getelementptr inbounds nuw i8, ptr %4871, i64 2224
  %5141 = icmp eq <2 x i64> %4921, zeroinitializer
  br label %5150

5142:                                             ; preds = %5214, %5129
  %5143 = icmp sgt i64 %4926, 0
  br i1 %5143, label %5144, label %5222

5144:                                             ; preds = %5142
  %5145 = getelementptr inbounds nuw i8, ptr %4871, i64 2312
  %5146 = icmp eq <2 x i64> %4921, zeroinitializer
  %5147 = getelementptr inbounds nuw i8, ptr %4871, i64 2320
  %5148 = getelementptr inbounds nuw i8, ptr %4871, i64 2264
  %5149 = getelementptr inbounds nuw i8, ptr %4871, i64 2272
  br label %5293

5150:                                             ; preds = %5133, %5214
  %5151 = phi <2 x double> [ %5113, %5133 ], [ %5197, %5214 ]
  %5152 = phi <2 x double> [ %5134, %5133 ], [ %5198, %5214 ]
  %5153 = phi <2 x double> [ %4956, %5133 ], [ %5196, %5214 ]
  %5154 = phi i64 [ %5108, %5133 ], [ %5220, %5214 ]
  %5155 = icmp eq i64 %5154, 0
  %5156 = load i64, ptr %4962, align 16, !tbaa !31
  br i1 %5155, label %5195, label %5157

5157:                                             ; preds = %5150
  %5158 = getelementptr <2 x double>, ptr %5131, i64 %5154
  %5159 = load <2 x double>, ptr %5158, align 16, !tbaa !26
  %5160 = icmp sgt i64 %5154, %5156
  br i1 %5160, label %5163, label %5161

5161:                                             ; preds = %5157
  %5162 = load <2 x double>, ptr %5135, align 16, !tbaa !26
  br label %5171

5163:                                             ; preds = %5157
  %5164 = load <2 x double>, ptr %5136, align 16, !tbaa !26
  %5165 = load <2 x double>, ptr %5137, align 16, !tbaa !26
  %5166 = load <2 x double>, ptr %5138, align 16, !tbaa !26
  %5167 = fmul <2 x double> %5159, %5166
  %5168 = fmul <2 x double> %5167, splat (double 0x3FD5555555555555)
  %5169 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5165, <2 x double> splat (double 5.000000e-01), <2 x double> %5168)
  %5170 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5159, <2 x double> %5169, <2 x double> %5164)
  br label %5171

5171:                                             ; preds = %5161, %5163
  %5172 = phi <2 x double> [ %5170, %5163 ], [ %5162, %5161 ]
  %5173 = fmul <2 x double> %5159, %5172
  %5174 = icmp slt i64 %5154, %5156
  br i1 %5174, label %5175, label %5182

5175:                                             ; preds = %5171
  %5176 = load ptr, ptr %5140, align 16, !tbaa !73
  %5177 = getelementptr inbounds nuw <2 x double>, ptr %5176, i64 %5154
  %5178 = load <2 x double>, ptr %5177, align 16, !tbaa !26
  %5179 = load <2 x double>, ptr %5139, align 16, !tbaa !26
  %5180 = fmul <2 x double> %5178, %5179
  %5181 = fmul <2 x double> %5178, %5179
  br label %5191

5182:                                             ; preds = %5171
  %5183 = load <2 x double>, ptr %5139, align 16, !tbaa !26
  %5184 = load ptr, ptr %5140, align 16, !tbaa !73
  %5185 = getelementptr inbounds nuw <2 x double>, ptr %5184, i64 %5154
  %5186 = load <2 x double>, ptr %5185, align 16, !tbaa !26
  %5187 = fsub <2 x double> %4956, %5183
  %5188 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5186, <2 x double> %5187, <2 x double> %5183)
  %5189 = fsub <2 x double> %4929, %5183
  %5190 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5186, <2 x double> %5189, <2 x double> %5183)
  br label %5191

5191:                                             ; preds = %5182, %5175
  %5192 = phi <2 x double> [ %5180, %5175 ], [ %5188, %5182 ]
  %5193 = phi <2 x double> [ %5181, %5175 ], [ %5190, %5182 ]
  %5194 = fsub <2 x double> %5193, %5192
  br label %5195

5195:                                             ; preds = %5150, %5191
  %5196 = phi <2 x double> [ %5192, %5191 ], [ zeroinitializer, %5150 ]
  %5197 = phi <2 x double> [ %5159, %5191 ], [ %5151, %5150 ]
  %5198 = phi <2 x double> [ %5173, %5191 ], [ %5152, %5150 ]
  %5199 = phi <2 x double> [ %5194, %5191 ], [ zeroinitializer, %5150 ]
  %5200 = fsub <2 x double> %5153, %5196
  %5201 = fdiv <2 x double> %5199, %5200
  %5202 = fsub <2 x double> %5198, %5152
  %5203 = fmul <2 x double> %5202, %5201
  %5204 = getelementptr inbounds nuw <2 x double>, ptr %5111, i64 %5154
  %5205 = icmp slt i64 %5154, %5156
  br i1 %5205, label %5206, label %5208

5206:                                             ; preds = %5195
  %5207 = load <2 x double>, ptr %5135, align 16, !tbaa !26
  br label %5214

5208:                                             ; preds = %5195
  %5209 = load <2 x double>, ptr %5136, align 16, !tbaa !26
  %5210 = load <2 x double>, ptr %5137, align 16, !tbaa !26
  %5211 = load <2 x double>, ptr %5138, align 16, !tbaa !26
  %5212 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5151, <2 x double> %5211, <2 x double> %5210)
  %5213 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5151, <2 x double> %5212, <2 x double> %5209)
  br label %5214

5214:                                             ; preds = %5208, %5206
  %5215 = phi <2 x double> [ %5207, %5206 ], [ %5213, %5208 ]
  %5216 = fdiv <2 x double> %5203, %5215
  %5217 = fadd <2 x double> %5151, %5216
  %5218 = load <2 x double>, ptr %5204, align 16, !tbaa !26
  %5219 = select <2 x i1> %5141, <2 x double> %5218, <2 x double> %5217
  store <2 x double> %5219, ptr %5204, align 16, !tbaa !26
  %5220 = add nsw i64 %5154, -1
  %5221 = icmp sgt i64 %5154, 0
  br i1 %5221, label %5150, label %5142, !llvm.loop !148

5222:                                             ; preds = %5293, %5142
  %5223 = getelementptr inbounds nuw i8, ptr %4871, i64 2312
  %5224 = load ptr, ptr %5223, align 8, !tbaa !50
  %5225 = getelementptr inbounds <2 x double>, ptr %5224, i64 %4926
  %5226 = getelementptr inbounds nuw i8, ptr %4871, i64 352
  %5227 = load <2 x double>, ptr %5226, align 16, !tbaa !26
  %5228 = load <2 x double>, ptr %5225, align 16, !tbaa !26
  %5229 = icmp eq <2 x i64> %4921, zeroinitializer
  %5230 = select <2 x i1> %5229, <2 x double> %5228, <2 x double> %5227
  store <2 x double> %5230, ptr %5225, align 16, !tbaa !26
  %5231 = getelementptr inbounds nuw i8, ptr %4871, i64 2320
  %5232 = load ptr, ptr %5231, align 16, !tbaa !60
  %5233 = getelementptr inbounds <2 x double>, ptr %5232, i64 %4926
  %5234 = load <2 x double>, ptr %5226, align 16, !tbaa !26
  %5235 = load <2 x double>, ptr %5233, align 16, !tbaa !26
  %5236 = select <2 x i1> %5229, <2 x double> %5235, <2 x double> %5234
  store <2 x double> %5236, ptr %5233, align 16, !tbaa !26
  %5237 = getelementptr inbounds nuw i8, ptr %4871, i64 1184
  %5238 = fneg <2 x double> %4957
  %5239 = getelementptr inbounds nuw i8, ptr %4871, i64 192
  %5240 = load <2 x double>, ptr %4927, align 16, !tbaa !26
  %5241 = select <2 x i1> %5229, <2 x double> %5240, <2 x double> %4945
  store <2 x double> %5241, ptr %4927, align 16, !tbaa !26
  %5242 = getelementptr inbounds nuw i8, ptr %4871, i64 976
  %5243 = load <2 x double>, ptr %5242, align 16, !tbaa !26
  %5244 = select <2 x i1> %5229, <2 x double> %5243, <2 x double> %4956
  store <2 x double> %5244, ptr %5242, align 16, !tbaa !26
  %5245 = getelementptr inbounds nuw i8, ptr %4871, i64 1168
  %5246 = load <2 x double>, ptr %5245, align 16, !tbaa !26
  %5247 = select <2 x i1> %5229, <2 x double> %5246, <2 x double> %4956
  store <2 x double> %5247, ptr %5245, align 16, !tbaa !26
  %5248 = getelementptr inbounds nuw i8, ptr %4871, i64 1008
  %5249 = load <2 x double>, ptr %5248, align 16, !tbaa !26
  %5250 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5238, <2 x double> %4939, <2 x double> %5249)
  %5251 = select <2 x i1> %5229, <2 x double> %5249, <2 x double> %5250
  store <2 x double> %5251, ptr %5248, align 16, !tbaa !26
  %5252 = getelementptr inbounds nuw i8, ptr %4871, i64 992
  %5253 = load <2 x double>, ptr %5252, align 16, !tbaa !26
  %5254 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4957, <2 x double> %4939, <2 x double> %5253)
  %5255 = select <2 x i1> %5229, <2 x double> %5253, <2 x double> %5254
  store <2 x double> %5255, ptr %5252, align 16, !tbaa !26
  %5256 = getelementptr inbounds nuw i8, ptr %4871, i64 1072
  %5257 = load <2 x double>, ptr %5256, align 16, !tbaa !26
  %5258 = load <2 x double>, ptr %5239, align 16, !tbaa !26
  %5259 = fneg <2 x double> %5258
  %5260 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5259, <2 x double> %4931, <2 x double> %5001)
  %5261 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4957, <2 x double> %5260, <2 x double> %5257)
  %5262 = select <2 x i1> %5229, <2 x double> %5257, <2 x double> %5261
  store <2 x double> %5262, ptr %5256, align 16, !tbaa !26
  %5263 = load <2 x double>, ptr %5237, align 16, !tbaa !26
  %5264 = select <2 x i1> %5229, <2 x double> %5263, <2 x double> %4945
  store <2 x double> %5264, ptr %5237, align 16, !tbaa !26
  %5265 = getelementptr inbounds nuw i8, ptr %4871, i64 1200
  %5266 = load <2 x double>, ptr %5265, align 16, !tbaa !26
  %5267 = select <2 x i1> %5229, <2 x double> %5266, <2 x double> %4956
  store <2 x double> %5267, ptr %5265, align 16, !tbaa !26
  %5268 = getelementptr inbounds nuw i8, ptr %4871, i64 1392
  %5269 = load <2 x double>, ptr %5268, align 16, !tbaa !26
  %5270 = select <2 x i1> %5229, <2 x double> %5269, <2 x double> %4956
  store <2 x double> %5270, ptr %5268, align 16, !tbaa !26
  %5271 = getelementptr inbounds nuw i8, ptr %4871, i64 1232
  %5272 = load <2 x double>, ptr %5271, align 16, !tbaa !26
  %5273 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5238, <2 x double> %4939, <2 x double> %5272)
  %5274 = select <2 x i1> %5229, <2 x double> %5272, <2 x double> %5273
  store <2 x double> %5274, ptr %5271, align 16, !tbaa !26
  %5275 = getelementptr inbounds nuw i8, ptr %4871, i64 1216
  %5276 = load <2 x double>, ptr %5275, align 16, !tbaa !26
  %5277 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4957, <2 x double> %4939, <2 x double> %5276)
  %5278 = select <2 x i1> %5229, <2 x double> %5276, <2 x double> %5277
  store <2 x double> %5278, ptr %5275, align 16, !tbaa !26
  %5279 = getelementptr inbounds nuw i8, ptr %4871, i64 1296
  %5280 = load <2 x double>, ptr %5279, align 16, !tbaa !26
  %5281 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5259, <2 x double> %4931, <2 x double> %4996)
  %5282 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4957, <2 x double> %5281, <2 x double> %5280)
  %5283 = select <2 x i1> %5229, <2 x double> %5280, <2 x double> %5282
  store <2 x double> %5283, ptr %5279, align 16, !tbaa !26
  %5284 = load <2 x i64>, ptr %4885, align 16, !tbaa !26
  %5285 = or <2 x i64> %5284, %4921
  store <2 x i64> %5285, ptr %4885, align 16, !tbaa !26
  %5286 = load <2 x double>, ptr %224, align 16, !tbaa !26
  %5287 = fmul <2 x double> %5286, splat (double 4.000000e+01)
  %5288 = fcmp olt <2 x double> %4869, %5287
  %5289 = select <2 x i1> %5288, <2 x double> %4869, <2 x double> %5287
  %5290 = icmp ne <2 x i64> %4921, zeroinitializer
  %5291 = select <2 x i1> %4912, <2 x i1> %5290, <2 x i1> zeroinitializer
  %5292 = select <2 x i1> %5291, <2 x double> %5289, <2 x double> %4869
  br label %5324

5293:                                             ; preds = %5144, %5293
  %5294 = phi i64 [ 0, %5144 ], [ %5322, %5293 ]
  %5295 = uitofp nneg i64 %5294 to double
  %5296 = insertelement <2 x double> poison, double %5295, i64 0
  %5297 = shufflevector <2 x double> %5296, <2 x double> poison, <2 x i32> zeroinitializer
  %5298 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5297, <2 x double> %5002, <2 x double> %4945)
  %5299 = load <2 x double>, ptr %4946, align 16, !tbaa !26
  %5300 = load <2 x double>, ptr %4948, align 16, !tbaa !26
  %5301 = load <2 x double>, ptr %4950, align 16, !tbaa !26
  %5302 = load <2 x double>, ptr %4952, align 16, !tbaa !26
  %5303 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5298, <2 x double> %5302, <2 x double> %5301)
  %5304 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5298, <2 x double> %5303, <2 x double> %5300)
  %5305 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5298, <2 x double> %5304, <2 x double> %5299)
  %5306 = load ptr, ptr %5145, align 8, !tbaa !50
  %5307 = getelementptr inbounds nuw <2 x double>, ptr %5306, i64 %5294
  %5308 = load <2 x double>, ptr %5307, align 16, !tbaa !26
  %5309 = select <2 x i1> %5146, <2 x double> %5308, <2 x double> %5305
  store <2 x double> %5309, ptr %5307, align 16, !tbaa !26
  %5310 = load ptr, ptr %5147, align 16, !tbaa !60
  %5311 = getelementptr inbounds nuw <2 x double>, ptr %5310, i64 %5294
  %5312 = load <2 x double>, ptr %5311, align 16, !tbaa !26
  %5313 = select <2 x i1> %5146, <2 x double> %5312, <2 x double> %5305
  store <2 x double> %5313, ptr %5311, align 16, !tbaa !26
  %5314 = load ptr, ptr %5148, align 8, !tbaa !51
  %5315 = getelementptr inbounds nuw <2 x double>, ptr %5314, i64 %5294
  %5316 = load <2 x double>, ptr %5315, align 16, !tbaa !26
  %5317 = select <2 x i1> %5146, <2 x double> %5316, <2 x double> %4931
  store <2 x double> %5317, ptr %5315, align 16, !tbaa !26
  %5318 = load ptr, ptr %5149, align 16, !tbaa !62
  %5319 = getelementptr inbounds nuw <2 x double>, ptr %5318, i64 %5294
  %5320 = load <2 x double>, ptr %5319, align 16, !tbaa !26
  %5321 = select <2 x i1> %5146, <2 x double> %5320, <2 x double> %4931
  store <2 x double> %5321, ptr %5319, align 16, !tbaa !26
  %5322 = add nuw nsw i64 %5294, 1
  %5323 = icmp eq i64 %5322, %4926
  br i1 %5323, label %5222, label %5293, !llvm.loop !149

5324:                                             ; preds = %5222, %4867
  %5325 = phi <2 x double> [ %5292, %5222 ], [ %4869, %4867 ]
  %5326 = add nuw nsw i64 %4868, 1
  %5327 = load i64, ptr %169, align 8, !tbaa !20
  %5328 = icmp slt i64 %5326, %5327
  br i1 %5328, label %4867, label %5329, !llvm.loop !150

5329:                                             ; preds = %5324
  %5330 = load <2 x double>, ptr %149, align 16, !tbaa !26
  br label %5331

5331:                                             ; preds = %5329, %4825
  %5332 = phi <2 x double> [ %4834, %4825 ], [ %5330, %5329 ]
  %5333 = phi <2 x double> [ %4857, %4825 ], [ %5325, %5329 ]
  %5334 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %5335 = select <2 x i1> %4394, <2 x double> %5334, <2 x double> %5333
  store <2 x double> %5335, ptr %152, align 16, !tbaa !26
  %5336 = load ptr, ptr %225, align 16, !tbaa !39
  %5337 = getelementptr inbounds nuw i8, ptr %5336, i64 16
  store <2 x double> %5332, ptr %5336, align 16, !tbaa !26
  %5338 = load <2 x double>, ptr %226, align 16, !tbaa !26
  %5339 = getelementptr inbounds nuw i8, ptr %5336, i64 32
  store <2 x double> %5338, ptr %5337, align 16, !tbaa !26
  %5340 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %5341 = getelementptr inbounds nuw i8, ptr %5336, i64 48
  store <2 x double> %5340, ptr %5339, align 16, !tbaa !26
  %5342 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %5343 = getelementptr inbounds nuw i8, ptr %5336, i64 64
  store <2 x double> %5342, ptr %5341, align 16, !tbaa !26
  %5344 = load i64, ptr %169, align 8, !tbaa !20
  %5345 = icmp sgt i64 %5344, 0
  br i1 %5345, label %5350, label %5346

5346:                                             ; preds = %5350, %5331
  %5347 = phi ptr [ %5343, %5331 ], [ %5356, %5350 ]
  %5348 = load i64, ptr %227, align 8, !tbaa !151
  %5349 = icmp eq i64 %5348, 0
  br i1 %5349, label %5485, label %5360

5350:                                             ; preds = %5331, %5350
  %5351 = phi ptr [ %5356, %5350 ], [ %5343, %5331 ]
  %5352 = phi i64 [ %5357, %5350 ], [ 0, %5331 ]
  %5353 = load ptr, ptr %142, align 8, !tbaa !28
  %5354 = getelementptr inbounds nuw %struct.Piece, ptr %5353, i64 %5352, i32 35
  %5355 = load <2 x double>, ptr %5354, align 16, !tbaa !26
  %5356 = getelementptr inbounds nuw i8, ptr %5351, i64 16
  store <2 x double> %5355, ptr %5351, align 16, !tbaa !26
  %5357 = add nuw nsw i64 %5352, 1
  %5358 = load i64, ptr %169, align 8, !tbaa !20
  %5359 = icmp slt i64 %5357, %5358
  br i1 %5359, label %5350, label %5346, !llvm.loop !152

5360:                                             ; preds = %5346
  %5361 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %5362 = getelementptr inbounds nuw i8, ptr %5347, i64 16
  store <2 x double> %5361, ptr %5347, align 16, !tbaa !26
  %5363 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %5364 = getelementptr inbounds nuw i8, ptr %5347, i64 32
  store <2 x double> %5363, ptr %5362, align 16, !tbaa !26
  %5365 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %5366 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %5367 = fsub <2 x double> %5365, %5366
  %5368 = fcmp ogt <2 x double> %5367, zeroinitializer
  %5369 = select <2 x i1> %5368, <2 x double> %5367, <2 x double> zeroinitializer
  store <2 x double> %5369, ptr %5364, align 16, !tbaa !26
  %5370 = load i64, ptr %169, align 8, !tbaa !20
  %5371 = icmp sgt i64 %5370, 0
  br i1 %5371, label %5372, label %5485

5372:                                             ; preds = %5360
  %5373 = getelementptr inbounds nuw i8, ptr %5347, i64 48
  br label %5374

5374:                                             ; preds = %5372, %5374
  %5375 = phi ptr [ %5481, %5374 ], [ %5373, %5372 ]
  %5376 = phi i64 [ %5482, %5374 ], [ 0, %5372 ]
  %5377 = load ptr, ptr %142, align 8, !tbaa !28
  %5378 = getelementptr inbounds nuw %struct.Piece, ptr %5377, i64 %5376
  %5379 = getelementptr inbounds nuw i8, ptr %5378, i64 2144
  %5380 = load ptr, ptr %5379, align 16, !tbaa !47
  %5381 = load i64, ptr %132, align 16, !tbaa !21
  %5382 = getelementptr <2 x double>, ptr %5380, i64 %5381
  %5383 = getelementptr i8, ptr %5382, i64 -16
  %5384 = load <2 x double>, ptr %5383, align 16, !tbaa !26
  %5385 = getelementptr inbounds nuw i8, ptr %5378, i64 1808
  %5386 = load <2 x double>, ptr %5385, align 16, !tbaa !26
  %5387 = getelementptr inbounds nuw i8, ptr %5378, i64 1488
  %5388 = load <2 x double>, ptr %5387, align 16, !tbaa !26
  %5389 = fsub <2 x double> %5388, %5384
  %5390 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5386, <2 x double> %5389, <2 x double> %5384)
  %5391 = getelementptr inbounds nuw i8, ptr %5375, i64 16
  store <2 x double> %5390, ptr %5375, align 16, !tbaa !26
  %5392 = getelementptr inbounds nuw i8, ptr %5378, i64 1696
  %5393 = load <2 x double>, ptr %5392, align 16, !tbaa !26
  %5394 = getelementptr inbounds nuw i8, ptr %5375, i64 32
  store <2 x double> %5393, ptr %5391, align 16, !tbaa !26
  %5395 = load <2 x double>, ptr %5378, align 16, !tbaa !26
  %5396 = getelementptr inbounds nuw i8, ptr %5378, i64 960
  %5397 = load <2 x double>, ptr %5396, align 16, !tbaa !26
  %5398 = fsub <2 x double> %5395, %5397
  %5399 = getelementptr inbounds nuw i8, ptr %5375, i64 48
  store <2 x double> %5398, ptr %5394, align 16, !tbaa !26
  %5400 = getelementptr inbounds nuw i8, ptr %5378, i64 1040
  %5401 = load <2 x double>, ptr %5400, align 16, !tbaa !26
  %5402 = getelementptr inbounds nuw i8, ptr %5375, i64 64
  store <2 x double> %5401, ptr %5399, align 16, !tbaa !26
  %5403 = getelementptr inbounds nuw i8, ptr %5378, i64 1024
  %5404 = load <2 x double>, ptr %5403, align 16, !tbaa !26
  %5405 = getelementptr inbounds nuw i8, ptr %5375, i64 80
  store <2 x double> %5404, ptr %5402, align 16, !tbaa !26
  %5406 = getelementptr inbounds nuw i8, ptr %5378, i64 992
  %5407 = load <2 x double>, ptr %5406, align 16, !tbaa !26
  %5408 = getelementptr inbounds nuw i8, ptr %5375, i64 96
  store <2 x double> %5407, ptr %5405, align 16, !tbaa !26
  %5409 = getelementptr inbounds nuw i8, ptr %5378, i64 1056
  %5410 = load <2 x double>, ptr %5409, align 16, !tbaa !26
  %5411 = getelementptr inbounds nuw i8, ptr %5375, i64 112
  store <2 x double> %5410, ptr %5408, align 16, !tbaa !26
  %5412 = getelementptr inbounds nuw i8, ptr %5378, i64 2264
  %5413 = load i64, ptr %133, align 8, !tbaa !22
  %5414 = sitofp i64 %5413 to double
  %5415 = tail call double @llvm.fmuladd.f64(double %5414, double 7.500000e-01, double -5.000000e-01)
  %5416 = fcmp ogt double %5415, 0.000000e+00
  %5417 = select i1 %5416, double %5415, double 0.000000e+00
  %5418 = fptosi double %5417 to i64
  %5419 = add nsw i64 %5413, -2
  %5420 = tail call i64 @llvm.smin.i64(i64 %5419, i64 %5418)
  %5421 = sitofp i64 %5420 to double
  %5422 = fsub double %5415, %5421
  %5423 = fsub double 1.000000e+00, %5422
  %5424 = insertelement <2 x double> poison, double %5423, i64 0
  %5425 = shufflevector <2 x double> %5424, <2 x double> poison, <2 x i32> zeroinitializer
  %5426 = load ptr, ptr %5412, align 8, !tbaa !51
  %5427 = getelementptr inbounds <2 x double>, ptr %5426, i64 %5420
  %5428 = load <2 x double>, ptr %5427, align 16, !tbaa !26
  %5429 = insertelement <2 x double> poison, double %5422, i64 0
  %5430 = shufflevector <2 x double> %5429, <2 x double> poison, <2 x i32> zeroinitializer
  %5431 = getelementptr i8, ptr %5427, i64 16
  %5432 = load <2 x double>, ptr %5431, align 16, !tbaa !26
  %5433 = fmul <2 x double> %5432, %5430
  %5434 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5425, <2 x double> %5428, <2 x double> %5433)
  store <2 x double> %5434, ptr %5411, align 16, !tbaa !26
  %5435 = load i64, ptr %133, align 8, !tbaa !22
  %5436 = sitofp i64 %5435 to double
  %5437 = tail call double @llvm.fmuladd.f64(double %5436, double 5.000000e-01, double -5.000000e-01)
  %5438 = fcmp ogt double %5437, 0.000000e+00
  %5439 = select i1 %5438, double %5437, double 0.000000e+00
  %5440 = fptosi double %5439 to i64
  %5441 = add nsw i64 %5435, -2
  %5442 = tail call i64 @llvm.smin.i64(i64 %5441, i64 %5440)
  %5443 = sitofp i64 %5442 to double
  %5444 = fsub double %5437, %5443
  %5445 = fsub double 1.000000e+00, %5444
  %5446 = insertelement <2 x double> poison, double %5445, i64 0
  %5447 = shufflevector <2 x double> %5446, <2 x double> poison, <2 x i32> zeroinitializer
  %5448 = load ptr, ptr %5412, align 8, !tbaa !51
  %5449 = getelementptr inbounds <2 x double>, ptr %5448, i64 %5442
  %5450 = load <2 x double>, ptr %5449, align 16, !tbaa !26
  %5451 = insertelement <2 x double> poison, double %5444, i64 0
  %5452 = shufflevector <2 x double> %5451, <2 x double> poison, <2 x i32> zeroinitializer
  %5453 = getelementptr i8, ptr %5449, i64 16
  %5454 = load <2 x double>, ptr %5453, align 16, !tbaa !26
  %5455 = fmul <2 x double> %5454, %5452
  %5456 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5447, <2 x double> %5450, <2 x double> %5455)
  %5457 = getelementptr inbounds nuw i8, ptr %5375, i64 128
  store <2 x double> %5456, ptr %5457, align 16, !tbaa !26
  %5458 = load i64, ptr %133, align 8, !tbaa !22
  %5459 = sitofp i64 %5458 to double
  %5460 = tail call double @llvm.fmuladd.f64(double %5459, double 2.500000e-01, double -5.000000e-01)
  %5461 = fcmp ogt double %5460, 0.000000e+00
  %5462 = select i1 %5461, double %5460, double 0.000000e+00
  %5463 = fptosi double %5462 to i64
  %5464 = add nsw i64 %5458, -2
  %5465 = tail call i64 @llvm.smin.i64(i64 %5464, i64 %5463)
  %5466 = sitofp i64 %5465 to double
  %5467 = fsub double %5460, %5466
  %5468 = fsub double 1.000000e+00, %5467
  %5469 = insertelement <2 x double> poison, double %5468, i64 0
  %5470 = shufflevector <2 x double> %5469, <2 x double> poison, <2 x i32> zeroinitializer
  %5471 = load ptr, ptr %5412, align 8, !tbaa !51
  %5472 = getelementptr inbounds <2 x double>, ptr %5471, i64 %5465
  %5473 = load <2 x double>, ptr %5472, align 16, !tbaa !26
  %5474 = insertelement <2 x double> poison, double %5467, i64 0
  %5475 = shufflevector <2 x double> %5474, <2 x double> poison, <2 x i32> zeroinitializer
  %5476 = getelementptr i8, ptr %5472, i64 16
  %5477 = load <2 x double>, ptr %5476, align 16, !tbaa !26
  %5478 = fmul <2 x double> %5477, %5475
  %5479 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5470, <2 x double> %5473, <2 x double> %5478)
  %5480 = getelementptr inbounds nuw i8, ptr %5375, i64 144
  store <2 x double> %5479, ptr %5480, align 16, !tbaa !26
  %5481 = getelementptr inbounds nuw i8, ptr %5375, i64 160
  %5482 = add nuw nsw i64 %5376, 1
  %5483 = load i64, ptr %169, align 8, !tbaa !20
  %5484 = icmp slt i64 %5482, %5483
  br i1 %5484, label %5374, label %5485, !llvm.loop !153

5485:                                             ; preds = %5374, %5360, %5346
  %5486 = getelementptr inbounds nuw i8, ptr %5347, i64 48
  %5487 = extractelement <2 x i64> %4334, i64 0
  %5488 = extractelement <2 x i64> %4334, i64 1
  br label %5489

5489:                                             ; preds = %5485, %5632
  %5490 = phi i1 [ true, %5485 ], [ false, %5632 ]
  %5491 = phi i64 [ %5487, %5485 ], [ %5488, %5632 ]
  %5492 = phi i64 [ 0, %5485 ], [ 1, %5632 ]
  %5493 = icmp eq i64 %5491, 0
  br i1 %5493, label %5632, label %5494

5494:                                             ; preds = %5489
  %5495 = getelementptr inbounds nuw [2 x i64], ptr %228, i64 0, i64 %5492
  %5496 = load i64, ptr %5495, align 8, !tbaa !30
  %5497 = load i64, ptr %229, align 8, !tbaa !154
  %5498 = icmp eq i64 %5496, %5497
  br i1 %5498, label %5502, label %5499

5499:                                             ; preds = %5494
  %5500 = getelementptr inbounds nuw [2 x ptr], ptr %233, i64 0, i64 %5492
  %5501 = load ptr, ptr %5500, align 8, !tbaa !155
  br label %5517

5502:                                             ; preds = %5494
  %5503 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %5492
  %5504 = load i64, ptr %5503, align 8, !tbaa !30
  %5505 = load ptr, ptr %230, align 8, !tbaa !156
  %5506 = load i64, ptr %125, align 8, !tbaa !42
  %5507 = getelementptr inbounds i64, ptr %5505, i64 %5506
  store i64 %5504, ptr %5507, align 8, !tbaa !30
  %5508 = load ptr, ptr %231, align 8, !tbaa !157
  %5509 = load i64, ptr %125, align 8, !tbaa !42
  %5510 = add nsw i64 %5509, 1
  store i64 %5510, ptr %125, align 8, !tbaa !42
  %5511 = load i64, ptr %229, align 8, !tbaa !154
  %5512 = mul nsw i64 %5511, %5509
  %5513 = load i64, ptr %232, align 8, !tbaa !15
  %5514 = mul nsw i64 %5512, %5513
  %5515 = getelementptr inbounds double, ptr %5508, i64 %5514
  %5516 = getelementptr inbounds nuw [2 x ptr], ptr %233, i64 0, i64 %5492
  store ptr %5515, ptr %5516, align 8, !tbaa !155
  br label %5517

5517:                                             ; preds = %5499, %5502
  %5518 = phi i64 [ %5496, %5499 ], [ 0, %5502 ]
  %5519 = phi ptr [ %5501, %5499 ], [ %5515, %5502 ]
  %5520 = add nsw i64 %5518, 1
  store i64 %5520, ptr %5495, align 8, !tbaa !30
  %5521 = load i64, ptr %232, align 8, !tbaa !15
  %5522 = mul nsw i64 %5521, %5518
  %5523 = getelementptr inbounds double, ptr %5519, i64 %5522
  %5524 = load ptr, ptr %225, align 16, !tbaa !39
  %5525 = icmp ult ptr %5524, %5343
  br i1 %5525, label %5585, label %5526

5526:                                             ; preds = %5585, %5517
  %5527 = phi ptr [ %5523, %5517 ], [ %5590, %5585 ]
  %5528 = load i64, ptr %141, align 16, !tbaa !16
  %5529 = icmp sgt i64 %5528, 0
  br i1 %5529, label %5530, label %5572

5530:                                             ; preds = %5526
  %5531 = and i64 %5528, 3
  %5532 = icmp ult i64 %5528, 4
  br i1 %5532, label %5557, label %5533

5533:                                             ; preds = %5530
  %5534 = and i64 %5528, 9223372036854775804
  br label %5535

5535:                                             ; preds = %5535, %5533
  %5536 = phi i64 [ 0, %5533 ], [ %5554, %5535 ]
  %5537 = phi ptr [ %5527, %5533 ], [ %5551, %5535 ]
  %5538 = phi i64 [ 0, %5533 ], [ %5555, %5535 ]
  %5539 = getelementptr i8, ptr %5537, i64 8
  %5540 = getelementptr inbounds nuw <2 x double>, ptr %5343, i64 %5536, i64 %5492
  %5541 = load double, ptr %5540, align 8
  store double %5541, ptr %5537, align 8, !tbaa !43
  %5542 = or disjoint i64 %5536, 1
  %5543 = getelementptr i8, ptr %5537, i64 16
  %5544 = getelementptr inbounds nuw <2 x double>, ptr %5343, i64 %5542, i64 %5492
  %5545 = load double, ptr %5544, align 8
  store double %5545, ptr %5539, align 8, !tbaa !43
  %5546 = or disjoint i64 %5536, 2
  %5547 = getelementptr i8, ptr %5537, i64 24
  %5548 = getelementptr inbounds nuw <2 x double>, ptr %5343, i64 %5546, i64 %5492
  %5549 = load double, ptr %5548, align 8
  store double %5549, ptr %5543, align 8, !tbaa !43
  %5550 = or disjoint i64 %5536, 3
  %5551 = getelementptr i8, ptr %5537, i64 32
  %5552 = getelementptr inbounds nuw <2 x double>, ptr %5343, i64 %5550, i64 %5492
  %5553 = load double, ptr %5552, align 8
  store double %5553, ptr %5547, align 8, !tbaa !43
  %5554 = add nuw nsw i64 %5536, 4
  %5555 = add i64 %5538, 4
  %5556 = icmp eq i64 %5555, %5534
  br i1 %5556, label %5557, label %5535, !llvm.loop !158

5557:                                             ; preds = %5535, %5530
  %5558 = phi ptr [ poison, %5530 ], [ %5551, %5535 ]
  %5559 = phi i64 [ 0, %5530 ], [ %5554, %5535 ]
  %5560 = phi ptr [ %5527, %5530 ], [ %5551, %5535 ]
  %5561 = icmp eq i64 %5531, 0
  br i1 %5561, label %5572, label %5562

5562:                                             ; preds = %5557, %5562
  %5563 = phi i64 [ %5569, %5562 ], [ %5559, %5557 ]
  %5564 = phi ptr [ %5566, %5562 ], [ %5560, %5557 ]
  %5565 = phi i64 [ %5570, %5562 ], [ 0, %5557 ]
  %5566 = getelementptr i8, ptr %5564, i64 8
  %5567 = getelementptr inbounds nuw <2 x double>, ptr %5343, i64 %5563, i64 %5492
  %5568 = load double, ptr %5567, align 8
  store double %5568, ptr %5564, align 8, !tbaa !43
  %5569 = add nuw nsw i64 %5563, 1
  %5570 = add i64 %5565, 1
  %5571 = icmp eq i64 %5570, %5531
  br i1 %5571, label %5572, label %5562, !llvm.loop !159

5572:                                             ; preds = %5557, %5562, %5526
  %5573 = phi ptr [ %5527, %5526 ], [ %5558, %5557 ], [ %5566, %5562 ]
  %5574 = load i64, ptr %227, align 8, !tbaa !151
  %5575 = icmp eq i64 %5574, 0
  br i1 %5575, label %5632, label %5576

5576:                                             ; preds = %5572
  %5577 = getelementptr inbounds nuw double, ptr %5347, i64 %5492
  %5578 = load double, ptr %5577, align 8, !tbaa !43
  %5579 = getelementptr inbounds nuw i8, ptr %5573, i64 8
  store double %5578, ptr %5573, align 8, !tbaa !43
  %5580 = getelementptr inbounds nuw i8, ptr %5577, i64 16
  %5581 = load double, ptr %5580, align 8, !tbaa !43
  %5582 = getelementptr inbounds nuw i8, ptr %5573, i64 16
  store double %5581, ptr %5579, align 8, !tbaa !43
  %5583 = getelementptr inbounds nuw i8, ptr %5577, i64 32
  %5584 = load double, ptr %5583, align 8, !tbaa !43
  store double %5584, ptr %5582, align 8, !tbaa !43
  br i1 %5529, label %5593, label %5632

5585:                                             ; preds = %5517, %5585
  %5586 = phi ptr [ %5591, %5585 ], [ %5524, %5517 ]
  %5587 = phi ptr [ %5590, %5585 ], [ %5523, %5517 ]
  %5588 = getelementptr inbounds nuw double, ptr %5586, i64 %5492
  %5589 = load double, ptr %5588, align 8, !tbaa !43
  %5590 = getelementptr inbounds nuw i8, ptr %5587, i64 8
  store double %5589, ptr %5587, align 8, !tbaa !43
  %5591 = getelementptr inbounds nuw i8, ptr %5586, i64 16
  %5592 = icmp ult ptr %5591, %5343
  br i1 %5592, label %5585, label %5526, !llvm.loop !160

5593:                                             ; preds = %5576
  %5594 = getelementptr inbounds nuw i8, ptr %5573, i64 24
  br label %5595

5595:                                             ; preds = %5593, %5595
  %5596 = phi i64 [ %5630, %5595 ], [ 0, %5593 ]
  %5597 = phi ptr [ %5629, %5595 ], [ %5594, %5593 ]
  %5598 = mul nuw nsw i64 %5596, 160
  %5599 = getelementptr inbounds nuw i8, ptr %5486, i64 %5598
  %5600 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 0, i64 %5492
  %5601 = load double, ptr %5600, align 8
  %5602 = getelementptr inbounds nuw i8, ptr %5597, i64 8
  store double %5601, ptr %5597, align 8, !tbaa !43
  %5603 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 1, i64 %5492
  %5604 = load double, ptr %5603, align 8
  %5605 = getelementptr inbounds nuw i8, ptr %5597, i64 16
  store double %5604, ptr %5602, align 8, !tbaa !43
  %5606 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 2, i64 %5492
  %5607 = load double, ptr %5606, align 8
  %5608 = getelementptr inbounds nuw i8, ptr %5597, i64 24
  store double %5607, ptr %5605, align 8, !tbaa !43
  %5609 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 3, i64 %5492
  %5610 = load double, ptr %5609, align 8
  %5611 = getelementptr inbounds nuw i8, ptr %5597, i64 32
  store double %5610, ptr %5608, align 8, !tbaa !43
  %5612 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 4, i64 %5492
  %5613 = load double, ptr %5612, align 8
  %5614 = getelementptr inbounds nuw i8, ptr %5597, i64 40
  store double %5613, ptr %5611, align 8, !tbaa !43
  %5615 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 5, i64 %5492
  %5616 = load double, ptr %5615, align 8
  %5617 = getelementptr inbounds nuw i8, ptr %5597, i64 48
  store double %5616, ptr %5614, align 8, !tbaa !43
  %5618 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 6, i64 %5492
  %5619 = load double, ptr %5618, align 8
  %5620 = getelementptr inbounds nuw i8, ptr %5597, i64 56
  store double %5619, ptr %5617, align 8, !tbaa !43
  %5621 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 7, i64 %5492
  %5622 = load double, ptr %5621, align 8
  %5623 = getelementptr inbounds nuw i8, ptr %5597, i64 64
  store double %5622, ptr %5620, align 8, !tbaa !43
  %5624 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 8, i64 %5492
  %5625 = load double, ptr %5624, align 8
  %5626 = getelementptr inbounds nuw i8, ptr %5597, i64 72
  store double %5625, ptr %5623, align 8, !tbaa !43
  %5627 = getelementptr inbounds nuw <2 x double>, ptr %5599, i64 9, i64 %5492
  %5628 = load double, ptr %5627, align 8
  %5629 = getelementptr inbounds nuw i8, ptr %5597, i64 80
  store double %5628, ptr %5626, align 8, !tbaa !43
  %5630 = add nuw nsw i64 %5596, 1
  %5631 = icmp eq i64 %5630, %5528
  br i1 %5631, label %5632, label %5595, !llvm.loop !158

5632:                                             ; preds = %5595, %5576, %5572, %5489
  br i1 %5490, label %5489, label %5633, !llvm.loop !161

5633:                                             ; preds = %5632
  %5634 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %5635 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %5636 = fsub <2 x double> %5634, %5635
  %5637 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %5638 = fadd <2 x double> %5637, splat (double -1.000000e-09)
  %5639 = fcmp oge <2 x double> %5636, %5638
  %5640 = select <2 x i1> %5639, <2 x i64> %4334, <2 x i64> zeroinitializer
  %5641 = load i64, ptr %169, align 8, !tbaa !20
  %5642 = icmp sgt i64 %5641, 0
  br i1 %5642, label %5643, label %5691

5643:                                             ; preds = %5633
  %5644 = load ptr, ptr %142, align 8, !tbaa !28
  %5645 = and i64 %5641, 3
  %5646 = icmp ult i64 %5641, 4
  br i1 %5646, label %5675, label %5647

5647:                                             ; preds = %5643
  %5648 = and i64 %5641, 9223372036854775804
  br label %5649

5649:                                             ; preds = %5649, %5647
  %5650 = phi i64 [ 0, %5647 ], [ %5672, %5649 ]
  %5651 = phi <2 x double> [ splat (double 1.000000e+09), %5647 ], [ %5671, %5649 ]
  %5652 = phi i64 [ 0, %5647 ], [ %5673, %5649 ]
  %5653 = getelementptr inbounds nuw %struct.Piece, ptr %5644, i64 %5650, i32 35
  %5654 = load <2 x double>, ptr %5653, align 16, !tbaa !26
  %5655 = fcmp olt <2 x double> %5651, %5654
  %5656 = select <2 x i1> %5655, <2 x double> %5651, <2 x double> %5654
  %5657 = or disjoint i64 %5650, 1
  %5658 = getelementptr inbounds nuw %struct.Piece, ptr %5644, i64 %5657, i32 35
  %5659 = load <2 x double>, ptr %5658, align 16, !tbaa !26
  %5660 = fcmp olt <2 x double> %5656, %5659
  %5661 = select <2 x i1> %5660, <2 x double> %5656, <2 x double> %5659
  %5662 = or disjoint i64 %5650, 2
  %5663 = getelementptr inbounds nuw %struct.Piece, ptr %5644, i64 %5662, i32 35
  %5664 = load <2 x double>, ptr %5663, align 16, !tbaa !26
  %5665 = fcmp olt <2 x double> %5661, %5664
  %5666 = select <2 x i1> %5665, <2 x double> %5661, <2 x double> %5664
  %5667 = or disjoint i64 %5650, 3
  %5668 = getelementptr inbounds nuw %struct.Piece, ptr %5644, i64 %5667, i32 35
  %5669 = load <2 x double>, ptr %5668, align 16, !tbaa !26
  %5670 = fcmp olt <2 x double> %5666, %5669
  %5671 = select <2 x i1> %5670, <2 x double> %5666, <2 x double> %5669
  %5672 = add nuw nsw i64 %5650, 4
  %5673 = add i64 %5652, 4
  %5674 = icmp eq i64 %5673, %5648
  br i1 %5674, label %5675, label %5649, !llvm.loop !135

5675:                                             ; preds = %5649, %5643
  %5676 = phi <2 x double> [ poison, %5643 ], [ %5671, %5649 ]
  %5677 = phi i64 [ 0, %5643 ], [ %5672, %5649 ]
  %5678 = phi <2 x double> [ splat (double 1.000000e+09), %5643 ], [ %5671, %5649 ]
  %5679 = icmp eq i64 %5645, 0
  br i1 %5679, label %5691, label %5680

5680:                                             ; preds = %5675, %5680
  %5681 = phi i64 [ %5688, %5680 ], [ %5677, %5675 ]
  %5682 = phi <2 x double> [ %5687, %5680 ], [ %5678, %5675 ]
  %5683 = phi i64 [ %5689, %5680 ], [ 0, %5675 ]
  %5684 = getelementptr inbounds nuw %struct.Piece, ptr %5644, i64 %5681, i32 35
  %5685 = load <2 x double>, ptr %5684, align 16, !tbaa !26
  %5686 = fcmp olt <2 x double> %5682, %5685
  %5687 = select <2 x i1> %5686, <2 x double> %5682, <2 x double> %5685
  %5688 = add nuw nsw i64 %5681, 1
  %5689 = add i64 %5683, 1
  %5690 = icmp eq i64 %5689, %5645
  br i1 %5690, label %5691, label %5680, !llvm.loop !162

5691:                                             ; preds = %5675, %5680, %5633
  %5692 = phi <2 x double> [ splat (double 1.000000e+09), %5633 ], [ %5676, %5675 ], [ %5687, %5680 ]
  %5693 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %5694 = select <2 x i1> %4394, <2 x double> %5693, <2 x double> %5692
  store <2 x double> %5694, ptr %221, align 16, !tbaa !26
  %5695 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %5696 = fcmp une <2 x double> %5695, zeroinitializer
  %5697 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %5698 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %5699 = fsub <2 x double> %5697, %5698
  %5700 = fcmp une <2 x double> %5695, splat (double 1.000000e+00)
  %5701 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %5702 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %5703 = fsub <2 x double> %5701, %5702
  %5704 = select <2 x i1> %5700, <2 x double> splat (double -1.000000e+00), <2 x double> %5703
  %5705 = fcmp une <2 x double> %5695, splat (double 2.000000e+00)
  %5706 = fsub <2 x double> %5694, %5702
  %5707 = select <2 x i1> %5705, <2 x double> %5704, <2 x double> %5706
  %5708 = fcmp une <2 x double> %5695, splat (double 3.000000e+00)
  %5709 = fsub <2 x double> %5699, %5702
  %5710 = select <2 x i1> %5708, <2 x double> %5707, <2 x double> %5709
  %5711 = fcmp une <2 x double> %5695, splat (double 4.000000e+00)
  %5712 = fsub <2 x double> %5702, %5699
  %5713 = select <2 x i1> %5711, <2 x double> %5710, <2 x double> %5712
  %5714 = fcmp oge <2 x double> %5713, splat (double 0xBEB0C6F7A0B5ED8D)
  %5715 = select <2 x i1> %5714, <2 x i1> %5696, <2 x i1> zeroinitializer
  %5716 = select <2 x i1> %5715, <2 x i64> %4334, <2 x i64> zeroinitializer
  %5717 = xor <2 x i64> %5716, splat (i64 -1)
  %5718 = and <2 x i64> %5640, %5717
  %5719 = load <2 x double>, ptr %139, align 16, !tbaa !26
  %5720 = icmp ne <2 x i64> %5718, zeroinitializer
  %5721 = select <2 x i1> %5696, <2 x i1> %5720, <2 x i1> zeroinitializer
  %5722 = select <2 x i1> %5721, <2 x double> splat (double 2.000000e+00), <2 x double> %5719
  store <2 x double> %5722, ptr %139, align 16, !tbaa !26
  %5723 = or <2 x i64> %5716, %5640
  %5724 = load <2 x double>, ptr %226, align 16, !tbaa !26
  %5725 = fadd <2 x double> %5724, splat (double 1.000000e+00)
  %5726 = icmp eq <2 x i64> %5723, zeroinitializer
  %5727 = select <2 x i1> %5726, <2 x double> %5724, <2 x double> %5725
  store <2 x double> %5727, ptr %226, align 16, !tbaa !26
  %5728 = xor <2 x i64> %5723, %4334
  %5729 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %5730 = fcmp oeq <2 x double> %5729, zeroinitializer
  %5731 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %5732 = fcmp oeq <2 x double> %5731, zeroinitializer
  %5733 = select <2 x i1> %5732, <2 x i1> %5730, <2 x i1> zeroinitializer
  %5734 = select <2 x i1> %5733, <2 x i64> %5728, <2 x i64> zeroinitializer
  %5735 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %5736 = fmul <2 x double> %5735, splat (double 5.000000e-01)
  %5737 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %5738 = fadd <2 x double> %5737, %5736
  %5739 = fadd <2 x double> %5738, splat (double -4.000000e-03)
  %5740 = fcmp ult <2 x double> %5701, %5739
  %5741 = fsub <2 x double> %5737, %5736
  %5742 = fadd <2 x double> %5741, splat (double 4.000000e-03)
  %5743 = fcmp ole <2 x double> %5701, %5742
  %5744 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %5745 = select <2 x i1> %5743, <2 x i64> splat (i64 -1), <2 x i64> %5744
  %5746 = select <2 x i1> %5740, <2 x i64> %5745, <2 x i64> zeroinitializer
  %5747 = xor <2 x i64> %5746, %5744
  %5748 = and <2 x i64> %5747, %5734
  %5749 = and <2 x i64> %5746, %5734
  %5750 = xor <2 x i64> %5734, splat (i64 -1)
  %5751 = and <2 x i64> %5744, %5750
  %5752 = or disjoint <2 x i64> %5749, %5751
  store <2 x i64> %5752, ptr %156, align 16, !tbaa !26
  %5753 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %5754 = or <2 x i64> %5748, %5753
  store <2 x i64> %5754, ptr %166, align 16, !tbaa !26
  %5755 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5723)
  %5756 = icmp eq i64 %5755, 0
  br i1 %5756, label %5767, label %5757

5757:                                             ; preds = %5691
  %5758 = extractelement <2 x i64> %5723, i64 0
  %5759 = icmp eq i64 %5758, 0
  br i1 %5759, label %5761, label %5760

5760:                                             ; preds = %5757
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %5761

5761:                                             ; preds = %5760, %5757
  %5762 = extractelement <2 x i64> %5723, i64 1
  %5763 = icmp eq i64 %5762, 0
  br i1 %5763, label %5765, label %5764

5764:                                             ; preds = %5761
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %5765

5765:                                             ; preds = %5764, %5761
  %5766 = load <2 x double>, ptr %139, align 16, !tbaa !26
  br label %5767

5767:                                             ; preds = %5765, %5691
  %5768 = phi <2 x double> [ %5766, %5765 ], [ %5722, %5691 ]
  %5769 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %5770 = load <2 x double>, ptr %234, align 16, !tbaa !26
  %5771 = fadd <2 x double> %5770, splat (double -1.000000e+00)
  %5772 = fcmp oge <2 x double> %5769, %5771
  %5773 = select <2 x i1> %5772, <2 x i64> %4334, <2 x i64> zeroinitializer
  %5774 = icmp eq <2 x i64> %5773, zeroinitializer
  %5775 = select <2 x i1> %5774, <2 x double> %5768, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %5775, ptr %139, align 16, !tbaa !26
  %5776 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5773)
  %5777 = icmp eq i64 %5776, 0
  br i1 %5777, label %527, label %5778

5778:                                             ; preds = %5767
  %5779 = extractelement <2 x i64> %5773, i64 0
  %5780 = icmp eq i64 %5779, 0
  br i1 %5780, label %5782, label %5781

5781:                                             ; preds = %5778
  store double 1.000000e+00, ptr %131, align 8, !tbaa !43
  br label %5782

5782:                                             ; preds = %5781, %5778
  %5783 = extractelement <2 x i64> %5773, i64 1
  %5784 = icmp eq i64 %5783, 0
  br i1 %5784, label %527, label %5785

5785:                                             ; preds = %5782
  store double 1.000000e+00, ptr %264, align 8, !tbaa !43
  br label %527

5786:                                             ; preds = %527, %532, %122
  %5787 = phi i64 [ 0, %122 ], [ 1, %532 ], [ 0, %527 ]
  ret i64 %5787
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 616
  %6 = zext nneg i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1584) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #7
  %8 = getelementptr inbounds nuw i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #7
  %9 = load i64, ptr %5, align 8, !tbaa !27
  %10 = add nsw i64 %9, 1
  store i64 %10, ptr %5, align 8, !tbaa !27
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 1568
  %12 = load ptr, ptr %11, align 16, !tbaa !39
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %14 = load <2 x double>, ptr %13, align 16, !tbaa !26
  %15 = getelementptr inbounds nuw i8, ptr %12, i64 16
  store <2 x double> %14, ptr %12, align 16, !tbaa !26
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %17 = load <2 x double>, ptr %16, align 16, !tbaa !26
  %18 = getelementptr inbounds nuw i8, ptr %12, i64 32
  store <2 x double> %17, ptr %15, align 16, !tbaa !26
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 736
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %21 = load <2 x double>, ptr %20, align 16, !tbaa !26
  %22 = getelementptr inbounds nuw i8, ptr %12, i64 48
  store <2 x double> %21, ptr %18, align 16, !tbaa !26
  %23 = load <2 x double>, ptr %19, align 16, !tbaa !26
  %24 = getelementptr inbounds nuw i8, ptr %12, i64 64
  store <2 x double> %23, ptr %22, align 16, !tbaa !26
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 584
  %26 = load i64, ptr %25, align 8, !tbaa !20
  %27 = icmp sgt i64 %26, 0
  %28 = getelementptr inbounds nuw i8, ptr %4, i64 8
  br i1 %27, label %29, label %31

29:                                               ; preds = %3
  %30 = getelementptr inbounds nuw i8, ptr %0, i64 1576
  br label %36

31:                                               ; preds = %36, %3
  %32 = phi ptr [ %24, %3 ], [ %42, %36 ]
  %33 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %34 = load i64, ptr %33, align 8, !tbaa !151
  %35 = icmp eq i64 %34, 0
  br i1 %35, label %177, label %46

36:                                               ; preds = %29, %36
  %37 = phi ptr [ %24, %29 ], [ %42, %36 ]
  %38 = phi i64 [ 0, %29 ], [ %43, %36 ]
  %39 = load ptr, ptr %30, align 8, !tbaa !28
  %40 = getelementptr inbounds nuw %struct.Piece, ptr %39, i64 %38, i32 35
  %41 = load <2 x double>, ptr %40, align 16, !tbaa !26
  %42 = getelementptr inbounds nuw i8, ptr %37, i64 16
  store <2 x double> %41, ptr %37, align 16, !tbaa !26
  %43 = add nuw nsw i64 %38, 1
  %44 = load i64, ptr %25, align 8, !tbaa !20
  %45 = icmp slt i64 %43, %44
  br i1 %45, label %36, label %31, !llvm.loop !152

46:                                               ; preds = %31
  %47 = getelementptr inbounds nuw i8, ptr %0, i64 800
  %48 = load <2 x double>, ptr %47, align 16, !tbaa !26
  %49 = getelementptr inbounds nuw i8, ptr %32, i64 16
  store <2 x double> %48, ptr %32, align 16, !tbaa !26
  %50 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %51 = load <2 x double>, ptr %50, align 16, !tbaa !26
  %52 = getelementptr inbounds nuw i8, ptr %32, i64 32
  store <2 x double> %51, ptr %49, align 16, !tbaa !26
  %53 = load <2 x double>, ptr %20, align 16, !tbaa !26
  %54 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %55 = load <2 x double>, ptr %54, align 16, !tbaa !26
  %56 = fsub <2 x double> %53, %55
  %57 = fcmp ogt <2 x double> %56, zeroinitializer
  %58 = select <2 x i1> %57, <2 x double> %56, <2 x double> zeroinitializer
  store <2 x double> %58, ptr %52, align 16, !tbaa !26
  %59 = load i64, ptr %25, align 8, !tbaa !20
  %60 = icmp sgt i64 %59, 0
  br i1 %60, label %61, label %177

61:                                               ; preds = %46
  %62 = getelementptr inbounds nuw i8, ptr %32, i64 48
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 1576
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 600
  br label %66

66:                                               ; preds = %61, %66
  %67 = phi ptr [ %62, %61 ], [ %173, %66 ]
  %68 = phi i64 [ 0, %61 ], [ %174, %66 ]
  %69 = load ptr, ptr %63, align 8, !tbaa !28
  %70 = getelementptr inbounds nuw %struct.Piece, ptr %69, i64 %68
  %71 = getelementptr inbounds nuw i8, ptr %70, i64 2144
  %72 = load ptr, ptr %71, align 16, !tbaa !47
  %73 = load i64, ptr %64, align 16, !tbaa !21
  %74 = getelementptr <2 x double>, ptr %72, i64 %73
  %75 = getelementptr i8, ptr %74, i64 -16
  %76 = load <2 x double>, ptr %75, align 16, !tbaa !26
  %77 = getelementptr inbounds nuw i8, ptr %70, i64 1808
  %78 = load <2 x double>, ptr %77, align 16, !tbaa !26
  %79 = getelementptr inbounds nuw i8, ptr %70, i64 1488
  %80 = load <2 x double>, ptr %79, align 16, !tbaa !26
  %81 = fsub <2 x double> %80, %76
  %82 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %78, <2 x double> %81, <2 x double> %76)
  %83 = getelementptr inbounds nuw i8, ptr %67, i64 16
  store <2 x double> %82, ptr %67, align 16, !tbaa !26
  %84 = getelementptr inbounds nuw i8, ptr %70, i64 1696
  %85 = load <2 x double>, ptr %84, align 16, !tbaa !26
  %86 = getelementptr inbounds nuw i8, ptr %67, i64 32
  store <2 x double> %85, ptr %83, align 16, !tbaa !26
  %87 = load <2 x double>, ptr %70, align 16, !tbaa !26
  %88 = getelementptr inbounds nuw i8, ptr %70, i64 960
  %89 = load <2 x double>, ptr %88, align 16, !tbaa !26
  %90 = fsub <2 x double> %87, %89
  %91 = getelementptr inbounds nuw i8, ptr %67, i64 48
  store <2 x double> %90, ptr %86, align 16, !tbaa !26
  %92 = getelementptr inbounds nuw i8, ptr %70, i64 1040
  %93 = load <2 x double>, ptr %92, align 16, !tbaa !26
  %94 = getelementptr inbounds nuw i8, ptr %67, i64 64
  store <2 x double> %93, ptr %91, align 16, !tbaa !26
  %95 = getelementptr inbounds nuw i8, ptr %70, i64 1024
  %96 = load <2 x double>, ptr %95, align 16, !tbaa !26
  %97 = getelementptr inbounds nuw i8, ptr %67, i64 80
  store <2 x double> %96, ptr %94, align 16, !tbaa !26
  %98 = getelementptr inbounds nuw i8, ptr %70, i64 992
  %99 = load <2 x double>, ptr %98, align 16, !tbaa !26
  %100 = getelementptr inbounds nuw i8, ptr %67, i64 96
  store <2 x double> %99, ptr %97, align 16, !tbaa !26
  %101 = getelementptr inbounds nuw i8, ptr %70, i64 1056
  %102 = load <2 x double>, ptr %101, align 16, !tbaa !26
  %103 = getelementptr inbounds nuw i8, ptr %67, i64 112
  store <2 x double> %102, ptr %100, align 16, !tbaa !26
  %104 = getelementptr inbounds nuw i8, ptr %70, i64 2264
  %105 = load i64, ptr %65, align 8, !tbaa !22
  %106 = sitofp i64 %105 to double
  %107 = tail call double @llvm.fmuladd.f64(double %106, double 7.500000e-01, double -5.000000e-01)
  %108 = fcmp ogt double %107, 0.000000e+00
  %109 = select i1 %108, double %107, double 0.000000e+00
  %110 = fptosi double %109 to i64
  %111 = add nsw i64 %105, -2
  %112 = tail call i64 @llvm.smin.i64(i64 %111, i64 %110)
  %113 = sitofp i64 %112 to double
  %114 = fsub double %107, %113
  %115 = fsub double 1.000000e+00, %114
  %116 = insertelement <2 x double> poison, double %115, i64 0
  %117 = shufflevector <2 x double> %116, <2 x double> poison, <2 x i32> zeroinitializer
  %118 = load ptr, ptr %104, align 8, !tbaa !51
  %119 = getelementptr inbounds <2 x double>, ptr %118, i64 %112
  %120 = load <2 x double>, ptr %119, align 16, !tbaa !26
  %121 = insertelement <2 x double> poison, double %114, i64 0
  %122 = shufflevector <2 x double> %121, <2 x double> poison, <2 x i32> zeroinitializer
  %123 = getelementptr i8, ptr %119, i64 16
  %124 = load <2 x double>, ptr %123, align 16, !tbaa !26
  %125 = fmul <2 x double> %124, %122
  %126 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %117, <2 x double> %120, <2 x double> %125)
  store <2 x double> %126, ptr %103, align 16, !tbaa !26
  %127 = load i64, ptr %65, align 8, !tbaa !22
  %128 = sitofp i64 %127 to double
  %129 = tail call double @llvm.fmuladd.f64(double %128, double 5.000000e-01, double -5.000000e-01)
  %130 = fcmp ogt double %129, 0.000000e+00
  %131 = select i1 %130, double %129, double 0.000000e+00
  %132 = fptosi double %131 to i64
  %133 = add nsw i64 %127, -2
  %134 = tail call i64 @llvm.smin.i64(i64 %133, i64 %132)
  %135 = sitofp i64 %134 to double
  %136 = fsub double %129, %135
  %137 = fsub double 1.000000e+00, %136
  %138 = insertelement <2 x double> poison, double %137, i64 0
  %139 = shufflevector <2 x double> %138, <2 x double> poison, <2 x i32> zeroinitializer
  %140 = load ptr, ptr %104, align 8, !tbaa !51
  %141 = getelementptr inbounds <2 x double>, ptr %140, i64 %134
  %142 = load <2 x double>, ptr %141, align 16, !tbaa !26
  %143 = insertelement <2 x double> poison, double %136, i64 0
  %144 = shufflevector <2 x double> %143, <2 x double> poison, <2 x i32> zeroinitializer
  %145 = getelementptr i8, ptr %141, i64 16
  %146 = load <2 x double>, ptr %145, align 16, !tbaa !26
  %147 = fmul <2 x double> %146, %144
  %148 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %139, <2 x double> %142, <2 x double> %147)
  %149 = getelementptr inbounds nuw i8, ptr %67, i64 128
  store <2 x double> %148, ptr %149, align 16, !tbaa !26
  %150 = load i64, ptr %65, align 8, !tbaa !22
  %151 = sitofp i64 %150 to double
  %152 = tail call double @llvm.fmuladd.f64(double %151, double 2.500000e-01, double -5.000000e-01)
  %153 = fcmp ogt double %152, 0.000000e+00
  %154 = select i1 %153, double %152, double 0.000000e+00
  %155 = fptosi double %154 to i64
  %156 = add nsw i64 %150, -2
  %157 = tail call i64 @llvm.smin.i64(i64 %156, i64 %155)
  %158 = sitofp i64 %157 to double
  %159 = fsub double %152, %158
  %160 = fsub double 1.000000e+00, %159
  %161 = insertelement <2 x double> poison, double %160, i64 0
  %162 = shufflevector <2 x double> %161, <2 x double> poison, <2 x i32> zeroinitializer
  %163 = load ptr, ptr %104, align 8, !tbaa !51
  %164 = getelementptr inbounds <2 x double>, ptr %163, i64 %157
  %165 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %166 = insertelement <2 x double> poison, double %159, i64 0
  %167 = shufflevector <2 x double> %166, <2 x double> poison, <2 x i32> zeroinitializer
  %168 = getelementptr i8, ptr %164, i64 16
  %169 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %170 = fmul <2 x double> %169, %167
  %171 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %162, <2 x double> %165, <2 x double> %170)
  %172 = getelementptr inbounds nuw i8, ptr %67, i64 144
  store <2 x double> %171, ptr %172, align 16, !tbaa !26
  %173 = getelementptr inbounds nuw i8, ptr %67, i64 160
  %174 = add nuw nsw i64 %68, 1
  %175 = load i64, ptr %25, align 8, !tbaa !20
  %176 = icmp slt i64 %174, %175
  br i1 %176, label %66, label %177, !llvm.loop !153

177:                                              ; preds = %66, %46, %31
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %180 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %182 = load ptr, ptr %181, align 8
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %186 = getelementptr inbounds nuw i8, ptr %0, i64 1536
  %187 = load ptr, ptr %11, align 16
  %188 = icmp ult ptr %187, %24
  %189 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %190 = getelementptr inbounds nuw i8, ptr %32, i64 48
  br label %191

191:                                              ; preds = %177, %332
  %192 = phi i1 [ true, %177 ], [ false, %332 ]
  %193 = phi ptr [ %4, %177 ], [ %28, %332 ]
  %194 = phi i64 [ 0, %177 ], [ 1, %332 ]
  %195 = load i64, ptr %193, align 8, !tbaa !30
  %196 = icmp eq i64 %195, 0
  br i1 %196, label %332, label %197

197:                                              ; preds = %191
  %198 = getelementptr inbounds nuw [2 x i64], ptr %178, i64 0, i64 %194
  %199 = load i64, ptr %198, align 8, !tbaa !30
  %200 = load i64, ptr %179, align 8, !tbaa !154
  %201 = icmp eq i64 %199, %200
  br i1 %201, label %205, label %202

202:                                              ; preds = %197
  %203 = getelementptr inbounds nuw [2 x ptr], ptr %186, i64 0, i64 %194
  %204 = load ptr, ptr %203, align 8, !tbaa !155
  br label %219

205:                                              ; preds = %197
  %206 = getelementptr inbounds nuw [2 x i64], ptr %180, i64 0, i64 %194
  %207 = load i64, ptr %206, align 8, !tbaa !30
  %208 = load i64, ptr %183, align 8, !tbaa !42
  %209 = getelementptr inbounds i64, ptr %182, i64 %208
  store i64 %207, ptr %209, align 8, !tbaa !30
  %210 = load ptr, ptr %184, align 8, !tbaa !157
  %211 = load i64, ptr %183, align 8, !tbaa !42
  %212 = add nsw i64 %211, 1
  store i64 %212, ptr %183, align 8, !tbaa !42
  %213 = load i64, ptr %179, align 8, !tbaa !154
  %214 = mul nsw i64 %213, %211
  %215 = load i64, ptr %185, align 8, !tbaa !15
  %216 = mul nsw i64 %214, %215
  %217 = getelementptr inbounds double, ptr %210, i64 %216
  %218 = getelementptr inbounds nuw [2 x ptr], ptr %186, i64 0, i64 %194
  store ptr %217, ptr %218, align 8, !tbaa !155
  br label %219

219:                                              ; preds = %202, %205
  %220 = phi i64 [ %199, %202 ], [ 0, %205 ]
  %221 = phi ptr [ %204, %202 ], [ %217, %205 ]
  %222 = add nsw i64 %220, 1
  store i64 %222, ptr %198, align 8, !tbaa !30
  %223 = load i64, ptr %185, align 8, !tbaa !15
  %224 = mul nsw i64 %223, %220
  %225 = getelementptr inbounds double, ptr %221, i64 %224
  br i1 %188, label %285, label %226

226:                                              ; preds = %285, %219
  %227 = phi ptr [ %225, %219 ], [ %290, %285 ]
  %228 = load i64, ptr %189, align 16, !tbaa !16
  %229 = icmp sgt i64 %228, 0
  br i1 %229, label %230, label %272

230:                                              ; preds = %226
  %231 = and i64 %228, 3
  %232 = icmp ult i64 %228, 4
  br i1 %232, label %257, label %233

233:                                              ; preds = %230
  %234 = and i64 %228, 9223372036854775804
  br label %235

235:                                              ; preds = %235, %233
  %236 = phi i64 [ 0, %233 ], [ %254, %235 ]
  %237 = phi ptr [ %227, %233 ], [ %251, %235 ]
  %238 = phi i64 [ 0, %233 ], [ %255, %235 ]
  %239 = getelementptr i8, ptr %237, i64 8
  %240 = getelementptr inbounds nuw <2 x double>, ptr %24, i64 %236, i64 %194
  %241 = load double, ptr %240, align 8
  store double %241, ptr %237, align 8, !tbaa !43
  %242 = or disjoint i64 %236, 1
  %243 = getelementptr i8, ptr %237, i64 16
  %244 = getelementptr inbounds nuw <2 x double>, ptr %24, i64 %242, i64 %194
  %245 = load double, ptr %244, align 8
  store double %245, ptr %239, align 8, !tbaa !43
  %246 = or disjoint i64 %236, 2
  %247 = getelementptr i8, ptr %237, i64 24
  %248 = getelementptr inbounds nuw <2 x double>, ptr %24, i64 %246, i64 %194
  %249 = load double, ptr %248, align 8
  store double %249, ptr %243, align 8, !tbaa !43
  %250 = or disjoint i64 %236, 3
  %251 = getelementptr i8, ptr %237, i64 32
  %252 = getelementptr inbounds nuw <2 x double>, ptr %24, i64 %250, i64 %194
  %253 = load double, ptr %252, align 8
  store double %253, ptr %247, align 8, !tbaa !43
  %254 = add nuw nsw i64 %236, 4
  %255 = add i64 %238, 4
  %256 = icmp eq i64 %255, %234
  br i1 %256, label %257, label %235, !llvm.loop !158

257:                                              ; preds = %235, %230
  %258 = phi ptr [ poison, %230 ], [ %251, %235 ]
  %259 = phi i64 [ 0, %230 ], [ %254, %235 ]
  %260 = phi ptr [ %227, %230 ], [ %251, %235 ]
  %261 = icmp eq i64 %231, 0
  br i1 %261, label %272, label %262

262:                                              ; preds = %257, %262
  %263 = phi i64 [ %269, %262 ], [ %259, %257 ]
  %264 = phi ptr [ %266, %262 ], [ %260, %257 ]
  %265 = phi i64 [ %270, %262 ], [ 0, %257 ]
  %266 = getelementptr i8, ptr %264, i64 8
  %267 = getelementptr inbounds nuw <2 x double>, ptr %24, i64 %263, i64 %194
  %268 = load double, ptr %267, align 8
  store double %268, ptr %264, align 8, !tbaa !43
  %269 = add nuw nsw i64 %263, 1
  %270 = add i64 %265, 1
  %271 = icmp eq i64 %270, %231
  br i1 %271, label %272, label %262, !llvm.loop !163

272:                                              ; preds = %257, %262, %226
  %273 = phi ptr [ %227, %226 ], [ %258, %257 ], [ %266, %262 ]
  %274 = load i64, ptr %33, align 8, !tbaa !151
  %275 = icmp eq i64 %274, 0
  br i1 %275, label %332, label %276

276:                                              ; preds = %272
  %277 = getelementptr inbounds nuw double, ptr %32, i64 %194
  %278 = load double, ptr %277, align 8, !tbaa !43
  %279 = getelementptr inbounds nuw i8, ptr %273, i64 8
  store double %278, ptr %273, align 8, !tbaa !43
  %280 = getelementptr inbounds nuw i8, ptr %277, i64 16
  %281 = load double, ptr %280, align 8, !tbaa !43
  %282 = getelementptr inbounds nuw i8, ptr %273, i64 16
  store double %281, ptr %279, align 8, !tbaa !43
  %283 = getelementptr inbounds nuw i8, ptr %277, i64 32
  %284 = load double, ptr %283, align 8, !tbaa !43
  store double %284, ptr %282, align 8, !tbaa !43
  br i1 %229, label %293, label %332

285:                                              ; preds = %219, %285
  %286 = phi ptr [ %291, %285 ], [ %187, %219 ]
  %287 = phi ptr [ %290, %285 ], [ %225, %219 ]
  %288 = getelementptr inbounds nuw double, ptr %286, i64 %194
  %289 = load double, ptr %288, align 8, !tbaa !43
  %290 = getelementptr inbounds nuw i8, ptr %287, i64 8
  store double %289, ptr %287, align 8, !tbaa !43
  %291 = getelementptr inbounds nuw i8, ptr %286, i64 16
  %292 = icmp ult ptr %291, %24
  br i1 %292, label %285, label %226, !llvm.loop !160

293:                                              ; preds = %276
  %294 = getelementptr inbounds nuw i8, ptr %273, i64 24
  br label %295

295:                                              ; preds = %293, %295
  %296 = phi i64 [ %330, %295 ], [ 0, %293 ]
  %297 = phi ptr [ %329, %295 ], [ %294, %293 ]
  %298 = mul nuw nsw i64 %296, 160
  %299 = getelementptr inbounds nuw i8, ptr %190, i64 %298
  %300 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 0, i64 %194
  %301 = load double, ptr %300, align 8
  %302 = getelementptr inbounds nuw i8, ptr %297, i64 8
  store double %301, ptr %297, align 8, !tbaa !43
  %303 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 1, i64 %194
  %304 = load double, ptr %303, align 8
  %305 = getelementptr inbounds nuw i8, ptr %297, i64 16
  store double %304, ptr %302, align 8, !tbaa !43
  %306 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 2, i64 %194
  %307 = load double, ptr %306, align 8
  %308 = getelementptr inbounds nuw i8, ptr %297, i64 24
  store double %307, ptr %305, align 8, !tbaa !43
  %309 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 3, i64 %194
  %310 = load double, ptr %309, align 8
  %311 = getelementptr inbounds nuw i8, ptr %297, i64 32
  store double %310, ptr %308, align 8, !tbaa !43
  %312 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 4, i64 %194
  %313 = load double, ptr %312, align 8
  %314 = getelementptr inbounds nuw i8, ptr %297, i64 40
  store double %313, ptr %311, align 8, !tbaa !43
  %315 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 5, i64 %194
  %316 = load double, ptr %315, align 8
  %317 = getelementptr inbounds nuw i8, ptr %297, i64 48
  store double %316, ptr %314, align 8, !tbaa !43
  %318 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 6, i64 %194
  %319 = load double, ptr %318, align 8
  %320 = getelementptr inbounds nuw i8, ptr %297, i64 56
  store double %319, ptr %317, align 8, !tbaa !43
  %321 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 7, i64 %194
  %322 = load double, ptr %321, align 8
  %323 = getelementptr inbounds nuw i8, ptr %297, i64 64
  store double %322, ptr %320, align 8, !tbaa !43
  %324 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 8, i64 %194
  %325 = load double, ptr %324, align 8
  %326 = getelementptr inbounds nuw i8, ptr %297, i64 72
  store double %325, ptr %323, align 8, !tbaa !43
  %327 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 9, i64 %194
  %328 = load double, ptr %327, align 8
  %329 = getelementptr inbounds nuw i8, ptr %297, i64 80
  store double %328, ptr %326, align 8, !tbaa !43
  %330 = add nuw nsw i64 %296, 1
  %331 = icmp eq i64 %330, %228
  br i1 %331, label %332, label %295, !llvm.loop !158

332:                                              ; preds = %295, %276, %272, %191
  br i1 %192, label %191, label %333, !llvm.loop !161

333:                                              ; preds = %332
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1584) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %6 = zext nneg i32 %2 to i64
  %7 = getelementptr inbounds nuw [2 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !154
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %11 = getelementptr inbounds nuw [2 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %13 = shl nuw nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = zext nneg i32 %14 to i64
  %16 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = zext nneg i32 %13 to i64
  %18 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 1552
  %20 = getelementptr inbounds nuw [2 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !43
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !164
  %23 = mul i64 %3, 288
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr inbounds nuw double, ptr %0, i64 %6
  br label %42

26:                                               ; preds = %42
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 584
  %28 = load i64, ptr %27, align 8, !tbaa !20
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %61

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 1576
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 576
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = load ptr, ptr %36, align 8, !tbaa !165
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !166
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !167
  br label %160

42:                                               ; preds = %42, %4
  %43 = phi i64 [ 0, %4 ], [ %59, %42 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !43
  %46 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !43
  %47 = or disjoint i64 %43, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !43
  %50 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !43
  %51 = or disjoint i64 %43, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !43
  %54 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !43
  %55 = or disjoint i64 %43, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !43
  %58 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !43
  %59 = add nuw nsw i64 %43, 4
  %60 = icmp eq i64 %59, 36
  br i1 %60, label %26, label %42, !llvm.loop !168

61:                                               ; preds = %556, %26
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 640
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 736
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 832
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 336
  %66 = getelementptr inbounds nuw double, ptr %65, i64 %6
  %67 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %68 = getelementptr inbounds nuw double, ptr %67, i64 %6
  %69 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %70 = getelementptr inbounds nuw double, ptr %69, i64 %6
  %71 = getelementptr inbounds nuw double, ptr %62, i64 %6
  %72 = getelementptr inbounds nuw i8, ptr %71, i64 64
  store double 0.000000e+00, ptr %72, align 8, !tbaa !43
  %73 = getelementptr inbounds nuw i8, ptr %71, i64 80
  store double 0.000000e+00, ptr %73, align 8, !tbaa !43
  %74 = load double, ptr %66, align 8, !tbaa !43
  store double %74, ptr %71, align 8, !tbaa !43
  %75 = load double, ptr %68, align 8, !tbaa !43
  %76 = getelementptr inbounds nuw i8, ptr %0, i64 688
  %77 = getelementptr inbounds nuw double, ptr %76, i64 %6
  store double %75, ptr %77, align 8, !tbaa !43
  %78 = load double, ptr %70, align 8, !tbaa !43
  %79 = getelementptr inbounds nuw i8, ptr %0, i64 672
  %80 = getelementptr inbounds nuw double, ptr %79, i64 %6
  store double %78, ptr %80, align 8, !tbaa !43
  %81 = getelementptr inbounds nuw i8, ptr %0, i64 656
  %82 = getelementptr inbounds nuw double, ptr %81, i64 %6
  store double %78, ptr %82, align 8, !tbaa !43
  %83 = getelementptr inbounds nuw double, ptr %63, i64 %6
  %84 = getelementptr inbounds nuw i8, ptr %83, i64 64
  store double 0.000000e+00, ptr %84, align 8, !tbaa !43
  %85 = getelementptr inbounds nuw i8, ptr %83, i64 80
  store double 0.000000e+00, ptr %85, align 8, !tbaa !43
  store double %74, ptr %83, align 8, !tbaa !43
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %87 = getelementptr inbounds nuw double, ptr %86, i64 %6
  store double %75, ptr %87, align 8, !tbaa !43
  %88 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %89 = getelementptr inbounds nuw double, ptr %88, i64 %6
  store double %78, ptr %89, align 8, !tbaa !43
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %91 = getelementptr inbounds nuw double, ptr %90, i64 %6
  store double %78, ptr %91, align 8, !tbaa !43
  %92 = getelementptr inbounds nuw double, ptr %64, i64 %6
  %93 = getelementptr inbounds nuw i8, ptr %92, i64 64
  store double 0.000000e+00, ptr %93, align 8, !tbaa !43
  %94 = getelementptr inbounds nuw i8, ptr %92, i64 80
  store double 0.000000e+00, ptr %94, align 8, !tbaa !43
  store double %74, ptr %92, align 8, !tbaa !43
  %95 = getelementptr inbounds nuw i8, ptr %0, i64 880
  %96 = getelementptr inbounds nuw double, ptr %95, i64 %6
  store double %75, ptr %96, align 8, !tbaa !43
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 864
  %98 = getelementptr inbounds nuw double, ptr %97, i64 %6
  store double %78, ptr %98, align 8, !tbaa !43
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 848
  %100 = getelementptr inbounds nuw double, ptr %99, i64 %6
  store double %78, ptr %100, align 8, !tbaa !43
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %102 = getelementptr inbounds nuw double, ptr %101, i64 %6
  %103 = load double, ptr %102, align 8, !tbaa !43
  %104 = getelementptr inbounds nuw i8, ptr %0, i64 1008
  %105 = getelementptr inbounds nuw double, ptr %104, i64 %6
  store double %103, ptr %105, align 8, !tbaa !43
  %106 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %107 = getelementptr inbounds nuw double, ptr %106, i64 %6
  store double %103, ptr %107, align 8, !tbaa !43
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 1168
  %109 = getelementptr inbounds nuw double, ptr %108, i64 %6
  store double 1.000000e+09, ptr %109, align 8, !tbaa !43
  %110 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %111 = getelementptr inbounds nuw double, ptr %110, i64 %6
  store double 0.000000e+00, ptr %111, align 8, !tbaa !43
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %113 = getelementptr inbounds nuw double, ptr %112, i64 %6
  %114 = load double, ptr %113, align 8, !tbaa !43
  %115 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %116 = getelementptr inbounds nuw double, ptr %115, i64 %6
  store double %114, ptr %116, align 8, !tbaa !43
  %117 = getelementptr inbounds nuw i8, ptr %0, i64 1184
  %118 = getelementptr inbounds nuw double, ptr %117, i64 %6
  store double %114, ptr %118, align 8, !tbaa !43
  %119 = getelementptr inbounds nuw i8, ptr %0, i64 560
  %120 = getelementptr inbounds nuw double, ptr %119, i64 %6
  %121 = load double, ptr %120, align 8, !tbaa !43
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 1296
  %123 = getelementptr inbounds nuw double, ptr %122, i64 %6
  store double %121, ptr %123, align 8, !tbaa !43
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 1136
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 1152
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 1248
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 1264
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 1312
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 1328
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 1360
  %136 = getelementptr inbounds nuw i8, ptr %0, i64 1376
  %137 = getelementptr inbounds nuw double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !43
  %138 = getelementptr inbounds nuw double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !43
  %139 = getelementptr inbounds nuw double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !43
  %140 = getelementptr inbounds nuw double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !43
  %141 = getelementptr inbounds nuw double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !43
  %142 = getelementptr inbounds nuw double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !43
  %143 = getelementptr inbounds nuw double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !43
  %144 = getelementptr inbounds nuw double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !43
  %145 = getelementptr inbounds nuw double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !43
  %146 = getelementptr inbounds nuw double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %146, align 8, !tbaa !43
  %147 = getelementptr inbounds nuw double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %147, align 8, !tbaa !43
  %148 = getelementptr inbounds nuw double, ptr %135, i64 %6
  store double 0.000000e+00, ptr %148, align 8, !tbaa !43
  %149 = getelementptr inbounds nuw double, ptr %136, i64 %6
  store double 0.000000e+00, ptr %149, align 8, !tbaa !43
  %150 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %151 = getelementptr inbounds nuw i64, ptr %150, i64 %6
  store i64 0, ptr %151, align 8, !tbaa !30
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %153 = getelementptr inbounds nuw i64, ptr %152, i64 %6
  store i64 0, ptr %153, align 8, !tbaa !30
  %154 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %155 = getelementptr inbounds nuw i64, ptr %154, i64 %6
  store i64 -1, ptr %155, align 8, !tbaa !30
  %156 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %157 = getelementptr inbounds nuw i64, ptr %156, i64 %6
  store i64 -1, ptr %157, align 8, !tbaa !30
  %158 = getelementptr inbounds nuw i8, ptr %0, i64 1392
  %159 = getelementptr inbounds nuw i64, ptr %158, i64 %6
  store i64 -1, ptr %159, align 8, !tbaa !30
  ret void

160:                                              ; preds = %30, %556
  %161 = phi i64 [ 0, %30 ], [ %557, %556 ]
  %162 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %161
  %163 = load i64, ptr %33, align 16, !tbaa !21
  %164 = load i64, ptr %34, align 8, !tbaa !22
  %165 = load i64, ptr %35, align 16, !tbaa !16
  %166 = mul nsw i64 %165, %3
  %167 = add nsw i64 %166, %161
  %168 = getelementptr inbounds nuw i8, ptr %162, i64 2128
  %169 = load i64, ptr %168, align 16, !tbaa !31
  %170 = mul i64 %167, 368
  %171 = getelementptr i8, ptr %37, i64 %170
  %172 = getelementptr inbounds nuw double, ptr %162, i64 %6
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
  %186 = getelementptr inbounds nuw i8, ptr %162, i64 2224
  %187 = load ptr, ptr %186, align 16, !tbaa !73
  %188 = getelementptr inbounds nuw double, ptr %187, i64 %6
  %189 = getelementptr double, ptr %183, i64 %163
  %190 = getelementptr inbounds nuw i8, ptr %162, i64 2232
  %191 = load ptr, ptr %190, align 8, !tbaa !49
  %192 = getelementptr inbounds nuw double, ptr %191, i64 %6
  %193 = shl i64 %163, 4
  %194 = getelementptr i8, ptr %183, i64 %193
  %195 = getelementptr inbounds nuw i8, ptr %162, i64 2240
  %196 = load ptr, ptr %195, align 16, !tbaa !139
  %197 = getelementptr inbounds nuw double, ptr %196, i64 %6
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
  %206 = getelementptr inbounds nuw <2 x double>, ptr %172, i64 %203
  store double %205, ptr %206, align 8, !tbaa !43
  %207 = or disjoint i64 %203, 1
  %208 = getelementptr double, ptr %171, i64 %207
  %209 = load double, ptr %208, align 8, !tbaa !43
  %210 = getelementptr inbounds nuw <2 x double>, ptr %172, i64 %207
  store double %209, ptr %210, align 8, !tbaa !43
  %211 = add nuw nsw i64 %203, 2
  %212 = icmp eq i64 %211, 46
  br i1 %212, label %173, label %202, !llvm.loop !169

213:                                              ; preds = %241, %185
  %214 = phi i64 [ 0, %185 ], [ %263, %241 ]
  %215 = icmp eq i64 %198, 0
  br i1 %215, label %226, label %216

216:                                              ; preds = %213
  %217 = getelementptr inbounds nuw double, ptr %183, i64 %214
  %218 = load double, ptr %217, align 8, !tbaa !43
  %219 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %214
  store double %218, ptr %219, align 8, !tbaa !43
  %220 = getelementptr double, ptr %189, i64 %214
  %221 = load double, ptr %220, align 8, !tbaa !43
  %222 = getelementptr inbounds nuw <2 x double>, ptr %192, i64 %214
  store double %221, ptr %222, align 8, !tbaa !43
  %223 = getelementptr double, ptr %194, i64 %214
  %224 = load double, ptr %223, align 8, !tbaa !43
  %225 = getelementptr inbounds nuw <2 x double>, ptr %197, i64 %214
  store double %224, ptr %225, align 8, !tbaa !43
  br label %226

226:                                              ; preds = %216, %213, %173
  %227 = getelementptr inbounds nuw i8, ptr %162, i64 240
  %228 = getelementptr inbounds nuw double, ptr %227, i64 %6
  %229 = load double, ptr %228, align 8, !tbaa !43
  %230 = load double, ptr %172, align 8, !tbaa !43
  %231 = icmp sgt i64 %180, 0
  br i1 %231, label %232, label %278

232:                                              ; preds = %226
  %233 = getelementptr double, ptr %183, i64 %177
  %234 = getelementptr inbounds nuw i8, ptr %162, i64 2248
  %235 = load ptr, ptr %234, align 8, !tbaa !36
  %236 = getelementptr inbounds nuw double, ptr %235, i64 %6
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
  %246 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %242
  store double %245, ptr %246, align 8, !tbaa !43
  %247 = getelementptr double, ptr %189, i64 %242
  %248 = load double, ptr %247, align 8, !tbaa !43
  %249 = getelementptr inbounds nuw <2 x double>, ptr %192, i64 %242
  store double %248, ptr %249, align 8, !tbaa !43
  %250 = getelementptr double, ptr %194, i64 %242
  %251 = load double, ptr %250, align 8, !tbaa !43
  %252 = getelementptr inbounds nuw <2 x double>, ptr %197, i64 %242
  store double %251, ptr %252, align 8, !tbaa !43
  %253 = or disjoint i64 %242, 1
  %254 = getelementptr inbounds nuw double, ptr %183, i64 %253
  %255 = load double, ptr %254, align 8, !tbaa !43
  %256 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %253
  store double %255, ptr %256, align 8, !tbaa !43
  %257 = getelementptr double, ptr %189, i64 %253
  %258 = load double, ptr %257, align 8, !tbaa !43
  %259 = getelementptr inbounds nuw <2 x double>, ptr %192, i64 %253
  store double %258, ptr %259, align 8, !tbaa !43
  %260 = getelementptr double, ptr %194, i64 %253
  %261 = load double, ptr %260, align 8, !tbaa !43
  %262 = getelementptr inbounds nuw <2 x double>, ptr %197, i64 %253
  store double %261, ptr %262, align 8, !tbaa !43
  %263 = add nuw nsw i64 %242, 2
  %264 = add i64 %243, 2
  %265 = icmp eq i64 %264, %201
  br i1 %265, label %213, label %241, !llvm.loop !170

266:                                              ; preds = %287, %232
  %267 = phi i64 [ 0, %232 ], [ %305, %287 ]
  %268 = icmp eq i64 %237, 0
  br i1 %268, label %278, label %269

269:                                              ; preds = %266, %269
  %270 = phi i64 [ %275, %269 ], [ %267, %266 ]
  %271 = phi i64 [ %276, %269 ], [ 0, %266 ]
  %272 = getelementptr double, ptr %233, i64 %270
  %273 = load double, ptr %272, align 8, !tbaa !43
  %274 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %270
  store double %273, ptr %274, align 8, !tbaa !43
  %275 = add nuw nsw i64 %270, 1
  %276 = add i64 %271, 1
  %277 = icmp eq i64 %276, %237
  br i1 %277, label %278, label %269, !llvm.loop !171

278:                                              ; preds = %266, %269, %226
  %279 = icmp ne i64 %169, 0
  %280 = icmp sgt i64 %163, -1
  %281 = select i1 %279, i1 %280, i1 false
  br i1 %281, label %282, label %308

282:                                              ; preds = %278
  %283 = fdiv double 1.000000e+00, %230
  %284 = getelementptr inbounds nuw i8, ptr %162, i64 2248
  %285 = load ptr, ptr %284, align 8, !tbaa !36
  %286 = getelementptr inbounds nuw double, ptr %285, i64 %6
  br label %444

287:                                              ; preds = %287, %239
  %288 = phi i64 [ 0, %239 ], [ %305, %287 ]
  %289 = phi i64 [ 0, %239 ], [ %306, %287 ]
  %290 = getelementptr double, ptr %233, i64 %288
  %291 = load double, ptr %290, align 8, !tbaa !43
  %292 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %288
  store double %291, ptr %292, align 8, !tbaa !43
  %293 = or disjoint i64 %288, 1
  %294 = getelementptr double, ptr %233, i64 %293
  %295 = load double, ptr %294, align 8, !tbaa !43
  %296 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %293
  store double %295, ptr %296, align 8, !tbaa !43
  %297 = or disjoint i64 %288, 2
  %298 = getelementptr double, ptr %233, i64 %297
  %299 = load double, ptr %298, align 8, !tbaa !43
  %300 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %297
  store double %299, ptr %300, align 8, !tbaa !43
  %301 = or disjoint i64 %288, 3
  %302 = getelementptr double, ptr %233, i64 %301
  %303 = load double, ptr %302, align 8, !tbaa !43
  %304 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %301
  store double %303, ptr %304, align 8, !tbaa !43
  %305 = add nuw nsw i64 %288, 4
  %306 = add i64 %289, 4
  %307 = icmp eq i64 %306, %240
  br i1 %307, label %266, label %287, !llvm.loop !172

308:                                              ; preds = %444, %278
  %309 = getelementptr inbounds nuw i8, ptr %162, i64 640
  %310 = getelementptr inbounds nuw double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !43
  %312 = getelementptr inbounds nuw i8, ptr %162, i64 656
  %313 = getelementptr inbounds nuw double, ptr %312, i64 %6
  %314 = load double, ptr %313, align 8, !tbaa !43
  %315 = getelementptr inbounds nuw i8, ptr %162, i64 672
  %316 = getelementptr inbounds nuw double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !43
  %318 = getelementptr inbounds nuw i8, ptr %162, i64 688
  %319 = getelementptr inbounds nuw double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !43
  %321 = tail call double @llvm.fmuladd.f64(double %230, double %320, double %317)
  %322 = tail call double @llvm.fmuladd.f64(double %230, double %321, double %314)
  %323 = tail call double @llvm.fmuladd.f64(double %230, double %322, double %311)
  %324 = getelementptr inbounds nuw i8, ptr %162, i64 208
  %325 = getelementptr inbounds nuw double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !43
  %327 = getelementptr inbounds nuw i8, ptr %162, i64 352
  %328 = getelementptr inbounds nuw double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !43
  %330 = getelementptr inbounds nuw i8, ptr %162, i64 384
  %331 = getelementptr inbounds nuw double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !43
  %333 = fsub double %329, %332
  %334 = fmul double %326, %333
  %335 = getelementptr inbounds nuw i8, ptr %162, i64 736
  %336 = getelementptr inbounds nuw i8, ptr %162, i64 960
  %337 = getelementptr inbounds nuw i8, ptr %162, i64 1184
  %338 = getelementptr inbounds nuw i8, ptr %162, i64 224
  %339 = getelementptr inbounds nuw double, ptr %338, i64 %6
  %340 = getelementptr inbounds nuw i8, ptr %162, i64 256
  %341 = getelementptr inbounds nuw double, ptr %340, i64 %6
  %342 = getelementptr inbounds nuw double, ptr %335, i64 %6
  %343 = getelementptr inbounds nuw i8, ptr %342, i64 80
  store double 0.000000e+00, ptr %343, align 8, !tbaa !43
  %344 = getelementptr inbounds nuw i8, ptr %342, i64 96
  store double 0.000000e+00, ptr %344, align 8, !tbaa !43
  %345 = getelementptr inbounds nuw i8, ptr %342, i64 112
  store double 0.000000e+00, ptr %345, align 8, !tbaa !43
  %346 = getelementptr inbounds nuw i8, ptr %342, i64 128
  store double 0.000000e+00, ptr %346, align 8, !tbaa !43
  %347 = getelementptr inbounds nuw i8, ptr %342, i64 144
  store double 0.000000e+00, ptr %347, align 8, !tbaa !43
  %348 = getelementptr inbounds nuw i8, ptr %342, i64 176
  store double 0.000000e+00, ptr %348, align 8, !tbaa !43
  %349 = getelementptr inbounds nuw i8, ptr %342, i64 192
  store double 0.000000e+00, ptr %349, align 8, !tbaa !43
  store double %230, ptr %342, align 8, !tbaa !43
  %350 = getelementptr inbounds nuw i8, ptr %162, i64 752
  %351 = getelementptr inbounds nuw double, ptr %350, i64 %6
  store double %329, ptr %351, align 8, !tbaa !43
  %352 = load double, ptr %339, align 8, !tbaa !43
  %353 = getelementptr inbounds nuw i8, ptr %162, i64 768
  %354 = getelementptr inbounds nuw double, ptr %353, i64 %6
  store double %352, ptr %354, align 8, !tbaa !43
  %355 = getelementptr inbounds nuw i8, ptr %162, i64 784
  %356 = getelementptr inbounds nuw double, ptr %355, i64 %6
  store double %334, ptr %356, align 8, !tbaa !43
  %357 = getelementptr inbounds nuw i8, ptr %162, i64 896
  %358 = getelementptr inbounds nuw double, ptr %357, i64 %6
  store double %229, ptr %358, align 8, !tbaa !43
  %359 = load double, ptr %341, align 8, !tbaa !43
  %360 = getelementptr inbounds nuw i8, ptr %162, i64 800
  %361 = getelementptr inbounds nuw double, ptr %360, i64 %6
  store double %359, ptr %361, align 8, !tbaa !43
  %362 = getelementptr inbounds nuw i8, ptr %162, i64 944
  %363 = getelementptr inbounds nuw double, ptr %362, i64 %6
  store double %323, ptr %363, align 8, !tbaa !43
  %364 = getelementptr inbounds nuw double, ptr %336, i64 %6
  %365 = getelementptr inbounds nuw i8, ptr %364, i64 80
  store double 0.000000e+00, ptr %365, align 8, !tbaa !43
  %366 = getelementptr inbounds nuw i8, ptr %364, i64 96
  store double 0.000000e+00, ptr %366, align 8, !tbaa !43
  %367 = getelementptr inbounds nuw i8, ptr %364, i64 112
  store double 0.000000e+00, ptr %367, align 8, !tbaa !43
  %368 = getelementptr inbounds nuw i8, ptr %364, i64 128
  store double 0.000000e+00, ptr %368, align 8, !tbaa !43
  %369 = getelementptr inbounds nuw i8, ptr %364, i64 144
  store double 0.000000e+00, ptr %369, align 8, !tbaa !43
  %370 = getelementptr inbounds nuw i8, ptr %364, i64 176
  store double 0.000000e+00, ptr %370, align 8, !tbaa !43
  %371 = getelementptr inbounds nuw i8, ptr %364, i64 192
  store double 0.000000e+00, ptr %371, align 8, !tbaa !43
  store double %230, ptr %364, align 8, !tbaa !43
  %372 = getelementptr inbounds nuw i8, ptr %162, i64 976
  %373 = getelementptr inbounds nuw double, ptr %372, i64 %6
  store double %329, ptr %373, align 8, !tbaa !43
  %374 = getelementptr inbounds nuw i8, ptr %162, i64 992
  %375 = getelementptr inbounds nuw double, ptr %374, i64 %6
  store double %352, ptr %375, align 8, !tbaa !43
  %376 = getelementptr inbounds nuw i8, ptr %162, i64 1008
  %377 = getelementptr inbounds nuw double, ptr %376, i64 %6
  store double %334, ptr %377, align 8, !tbaa !43
  %378 = getelementptr inbounds nuw i8, ptr %162, i64 1120
  %379 = getelementptr inbounds nuw double, ptr %378, i64 %6
  store double %229, ptr %379, align 8, !tbaa !43
  %380 = getelementptr inbounds nuw i8, ptr %162, i64 1024
  %381 = getelementptr inbounds nuw double, ptr %380, i64 %6
  store double %359, ptr %381, align 8, !tbaa !43
  %382 = getelementptr inbounds nuw i8, ptr %162, i64 1168
  %383 = getelementptr inbounds nuw double, ptr %382, i64 %6
  store double %323, ptr %383, align 8, !tbaa !43
  %384 = getelementptr inbounds nuw double, ptr %337, i64 %6
  %385 = getelementptr inbounds nuw i8, ptr %384, i64 80
  store double 0.000000e+00, ptr %385, align 8, !tbaa !43
  %386 = getelementptr inbounds nuw i8, ptr %384, i64 96
  store double 0.000000e+00, ptr %386, align 8, !tbaa !43
  %387 = getelementptr inbounds nuw i8, ptr %384, i64 112
  store double 0.000000e+00, ptr %387, align 8, !tbaa !43
  %388 = getelementptr inbounds nuw i8, ptr %384, i64 128
  store double 0.000000e+00, ptr %388, align 8, !tbaa !43
  %389 = getelementptr inbounds nuw i8, ptr %384, i64 144
  store double 0.000000e+00, ptr %389, align 8, !tbaa !43
  %390 = getelementptr inbounds nuw i8, ptr %384, i64 176
  store double 0.000000e+00, ptr %390, align 8, !tbaa !43
  %391 = getelementptr inbounds nuw i8, ptr %384, i64 192
  store double 0.000000e+00, ptr %391, align 8, !tbaa !43
  store double %230, ptr %384, align 8, !tbaa !43
  %392 = load double, ptr %328, align 8, !tbaa !43
  %393 = getelementptr inbounds nuw i8, ptr %162, i64 1200
  %394 = getelementptr inbounds nuw double, ptr %393, i64 %6
  store double %392, ptr %394, align 8, !tbaa !43
  %395 = getelementptr inbounds nuw i8, ptr %162, i64 1216
  %396 = getelementptr inbounds nuw double, ptr %395, i64 %6
  store double %352, ptr %396, align 8, !tbaa !43
  %397 = getelementptr inbounds nuw i8, ptr %162, i64 1232
  %398 = getelementptr inbounds nuw double, ptr %397, i64 %6
  store double %334, ptr %398, align 8, !tbaa !43
  %399 = getelementptr inbounds nuw i8, ptr %162, i64 1344
  %400 = getelementptr inbounds nuw double, ptr %399, i64 %6
  store double %229, ptr %400, align 8, !tbaa !43
  %401 = getelementptr inbounds nuw i8, ptr %162, i64 1248
  %402 = getelementptr inbounds nuw double, ptr %401, i64 %6
  store double %359, ptr %402, align 8, !tbaa !43
  %403 = getelementptr inbounds nuw i8, ptr %162, i64 1392
  %404 = getelementptr inbounds nuw double, ptr %403, i64 %6
  store double %323, ptr %404, align 8, !tbaa !43
  %405 = load double, ptr %339, align 8, !tbaa !43
  %406 = fadd double %334, %405
  %407 = getelementptr inbounds nuw i8, ptr %162, i64 400
  %408 = getelementptr inbounds nuw double, ptr %407, i64 %6
  store double %406, ptr %408, align 8, !tbaa !43
  %409 = fcmp ogt double %405, 0.000000e+00
  %410 = fdiv double 1.000000e+00, %405
  %411 = select i1 %409, double %410, double 0.000000e+00
  %412 = getelementptr inbounds nuw i8, ptr %162, i64 1936
  %413 = getelementptr inbounds nuw double, ptr %412, i64 %6
  store double %411, ptr %413, align 8, !tbaa !43
  %414 = getelementptr inbounds nuw i8, ptr %162, i64 176
  %415 = getelementptr inbounds nuw double, ptr %414, i64 %6
  %416 = load double, ptr %415, align 8, !tbaa !43
  %417 = fdiv double 1.000000e+00, %416
  %418 = getelementptr inbounds nuw i8, ptr %162, i64 1952
  %419 = getelementptr inbounds nuw double, ptr %418, i64 %6
  store double %417, ptr %419, align 8, !tbaa !43
  %420 = getelementptr inbounds nuw i8, ptr %162, i64 1488
  %421 = getelementptr inbounds nuw i8, ptr %162, i64 1696
  %422 = getelementptr inbounds nuw i8, ptr %162, i64 1712
  %423 = getelementptr inbounds nuw i8, ptr %162, i64 1904
  %424 = getelementptr inbounds nuw double, ptr %420, i64 %6
  store double %229, ptr %424, align 8, !tbaa !43
  %425 = getelementptr inbounds nuw double, ptr %421, i64 %6
  store double %229, ptr %425, align 8, !tbaa !43
  %426 = getelementptr inbounds nuw double, ptr %422, i64 %6
  store double %229, ptr %426, align 8, !tbaa !43
  %427 = getelementptr inbounds nuw double, ptr %423, i64 %6
  store double %229, ptr %427, align 8, !tbaa !43
  %428 = getelementptr inbounds nuw i8, ptr %162, i64 1504
  %429 = getelementptr inbounds nuw i8, ptr %162, i64 1520
  %430 = getelementptr inbounds nuw i8, ptr %162, i64 1920
  %431 = getelementptr inbounds nuw i8, ptr %162, i64 1888
  %432 = getelementptr inbounds nuw i8, ptr %162, i64 1808
  %433 = getelementptr inbounds nuw double, ptr %428, i64 %6
  store double 0.000000e+00, ptr %433, align 8, !tbaa !43
  %434 = getelementptr inbounds nuw double, ptr %429, i64 %6
  store double 0.000000e+00, ptr %434, align 8, !tbaa !43
  %435 = getelementptr inbounds nuw double, ptr %430, i64 %6
  store double 0.000000e+00, ptr %435, align 8, !tbaa !43
  %436 = getelementptr inbounds nuw double, ptr %431, i64 %6
  store double 0.000000e+00, ptr %436, align 8, !tbaa !43
  %437 = getelementptr inbounds nuw double, ptr %432, i64 %6
  store double 0.000000e+00, ptr %437, align 8, !tbaa !43
  %438 = getelementptr inbounds nuw i8, ptr %162, i64 2080
  %439 = getelementptr inbounds nuw i64, ptr %438, i64 %6
  store i64 0, ptr %439, align 8, !tbaa !30
  %440 = getelementptr inbounds nuw i8, ptr %162, i64 2096
  %441 = getelementptr inbounds nuw i64, ptr %440, i64 %6
  store i64 -1, ptr %441, align 8, !tbaa !30
  %442 = getelementptr inbounds nuw i8, ptr %162, i64 2112
  %443 = getelementptr inbounds nuw i64, ptr %442, i64 %6
  store i64 0, ptr %443, align 8, !tbaa !30
  br i1 %184, label %466, label %482

444:                                              ; preds = %282, %444
  %445 = phi i64 [ 0, %282 ], [ %464, %444 ]
  %446 = icmp slt i64 %445, %169
  %447 = select i1 %446, double %283, double 1.000000e+00
  %448 = shl nsw i64 %445, 6
  %449 = getelementptr inbounds nuw i8, ptr %286, i64 %448
  %450 = load double, ptr %449, align 8, !tbaa !43
  %451 = fmul double %447, %450
  store double %451, ptr %449, align 8, !tbaa !43
  %452 = fdiv double %447, %230
  %453 = getelementptr inbounds nuw i8, ptr %449, i64 16
  %454 = load double, ptr %453, align 8, !tbaa !43
  %455 = fmul double %452, %454
  store double %455, ptr %453, align 8, !tbaa !43
  %456 = fdiv double %452, %230
  %457 = getelementptr inbounds nuw i8, ptr %449, i64 32
  %458 = load double, ptr %457, align 8, !tbaa !43
  %459 = fmul double %456, %458
  store double %459, ptr %457, align 8, !tbaa !43
  %460 = fdiv double %456, %230
  %461 = getelementptr inbounds nuw i8, ptr %449, i64 48
  %462 = load double, ptr %461, align 8, !tbaa !43
  %463 = fmul double %460, %462
  store double %463, ptr %461, align 8, !tbaa !43
  %464 = add nuw nsw i64 %445, 1
  %465 = icmp slt i64 %445, %163
  br i1 %465, label %444, label %308, !llvm.loop !173

466:                                              ; preds = %308
  %467 = getelementptr inbounds nuw i8, ptr %162, i64 2152
  %468 = load ptr, ptr %467, align 8, !tbaa !57
  %469 = getelementptr inbounds nuw double, ptr %468, i64 %6
  %470 = getelementptr inbounds nuw i8, ptr %162, i64 2144
  %471 = load ptr, ptr %470, align 16, !tbaa !47
  %472 = getelementptr inbounds nuw double, ptr %471, i64 %6
  %473 = getelementptr inbounds nuw i8, ptr %162, i64 2136
  %474 = load ptr, ptr %473, align 8, !tbaa !58
  %475 = getelementptr inbounds nuw double, ptr %474, i64 %6
  %476 = getelementptr inbounds nuw i8, ptr %162, i64 2176
  %477 = load ptr, ptr %476, align 16, !tbaa !48
  %478 = getelementptr inbounds nuw double, ptr %477, i64 %6
  %479 = getelementptr inbounds nuw i8, ptr %162, i64 2168
  %480 = load ptr, ptr %479, align 8, !tbaa !68
  %481 = getelementptr inbounds nuw double, ptr %480, i64 %6
  br label %495

482:                                              ; preds = %495, %308
  %483 = icmp slt i64 %164, 0
  br i1 %483, label %556, label %484

484:                                              ; preds = %482
  %485 = getelementptr inbounds nuw i8, ptr %162, i64 2320
  %486 = load ptr, ptr %485, align 16, !tbaa !60
  %487 = getelementptr inbounds nuw double, ptr %486, i64 %6
  %488 = getelementptr inbounds nuw i8, ptr %162, i64 2312
  %489 = load ptr, ptr %488, align 8, !tbaa !50
  %490 = getelementptr inbounds nuw double, ptr %489, i64 %6
  %491 = icmp eq i64 %164, 0
  br i1 %491, label %504, label %492

492:                                              ; preds = %484
  %493 = add nuw i64 %164, 1
  %494 = and i64 %493, -2
  br label %529

495:                                              ; preds = %466, %495
  %496 = phi i64 [ 0, %466 ], [ %502, %495 ]
  %497 = getelementptr inbounds nuw <2 x double>, ptr %469, i64 %496
  store double %229, ptr %497, align 8, !tbaa !43
  %498 = getelementptr inbounds nuw <2 x double>, ptr %472, i64 %496
  store double %229, ptr %498, align 8, !tbaa !43
  %499 = getelementptr inbounds nuw <2 x double>, ptr %475, i64 %496
  store double %229, ptr %499, align 8, !tbaa !43
  %500 = getelementptr inbounds nuw <2 x double>, ptr %478, i64 %496
  store double 1.000000e+00, ptr %500, align 8, !tbaa !43
  %501 = getelementptr inbounds nuw <2 x double>, ptr %481, i64 %496
  store double 1.000000e+00, ptr %501, align 8, !tbaa !43
  %502 = add nuw nsw i64 %496, 1
  %503 = icmp eq i64 %502, %163
  br i1 %503, label %482, label %495, !llvm.loop !174

504:                                              ; preds = %543, %484
  %505 = phi i64 [ 0, %484 ], [ %547, %543 ]
  %506 = and i64 %164, 1
  %507 = icmp eq i64 %506, 0
  br i1 %507, label %508, label %516

508:                                              ; preds = %504
  %509 = icmp slt i64 %505, %164
  br i1 %509, label %512, label %510

510:                                              ; preds = %508
  %511 = load double, ptr %328, align 8, !tbaa !43
  br label %512

512:                                              ; preds = %510, %508
  %513 = phi double [ %511, %510 ], [ %323, %508 ]
  %514 = getelementptr inbounds nuw <2 x double>, ptr %487, i64 %505
  store double %513, ptr %514, align 8, !tbaa !43
  %515 = getelementptr inbounds nuw <2 x double>, ptr %490, i64 %505
  store double %513, ptr %515, align 8, !tbaa !43
  br label %516

516:                                              ; preds = %504, %512
  %517 = icmp eq i64 %164, 0
  br i1 %517, label %556, label %518

518:                                              ; preds = %516
  %519 = getelementptr inbounds nuw i8, ptr %162, i64 2272
  %520 = load ptr, ptr %519, align 16, !tbaa !62
  %521 = getelementptr inbounds nuw double, ptr %520, i64 %6
  %522 = getelementptr inbounds nuw i8, ptr %162, i64 2264
  %523 = load ptr, ptr %522, align 8, !tbaa !51
  %524 = getelementptr inbounds nuw double, ptr %523, i64 %6
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
  %534 = load double, ptr %328, align 8, !tbaa !43
  br label %535

535:                                              ; preds = %529, %533
  %536 = phi double [ %534, %533 ], [ %323, %529 ]
  %537 = getelementptr inbounds nuw <2 x double>, ptr %487, i64 %530
  store double %536, ptr %537, align 8, !tbaa !43
  %538 = getelementptr inbounds nuw <2 x double>, ptr %490, i64 %530
  store double %536, ptr %538, align 8, !tbaa !43
  %539 = or disjoint i64 %530, 1
  %540 = icmp slt i64 %539, %164
  br i1 %540, label %543, label %541

541:                                              ; preds = %535
  %542 = load double, ptr %328, align 8, !tbaa !43
  br label %543

543:                                              ; preds = %541, %535
  %544 = phi double [ %542, %541 ], [ %323, %535 ]
  %545 = getelementptr inbounds nuw <2 x double>, ptr %487, i64 %539
  store double %544, ptr %545, align 8, !tbaa !43
  %546 = getelementptr inbounds nuw <2 x double>, ptr %490, i64 %539
  store double %544, ptr %546, align 8, !tbaa !43
  %547 = add nuw i64 %530, 2
  %548 = add i64 %531, 2
  %549 = icmp eq i64 %548, %494
  br i1 %549, label %504, label %529, !llvm.loop !175

550:                                              ; preds = %560, %518
  %551 = phi i64 [ 0, %518 ], [ %568, %560 ]
  %552 = icmp eq i64 %525, 0
  br i1 %552, label %556, label %553

553:                                              ; preds = %550
  %554 = getelementptr inbounds nuw <2 x double>, ptr %521, i64 %551
  store double %229, ptr %554, align 8, !tbaa !43
  %555 = getelementptr inbounds nuw <2 x double>, ptr %524, i64 %551
  store double %229, ptr %555, align 8, !tbaa !43
  br label %556

556:                                              ; preds = %553, %550, %482, %516
  %557 = add nuw nsw i64 %161, 1
  %558 = load i64, ptr %27, align 8, !tbaa !20
  %559 = icmp slt i64 %557, %558
  br i1 %559, label %160, label %61, !llvm.loop !176

560:                                              ; preds = %560, %527
  %561 = phi i64 [ 0, %527 ], [ %568, %560 ]
  %562 = phi i64 [ 0, %527 ], [ %569, %560 ]
  %563 = getelementptr inbounds nuw <2 x double>, ptr %521, i64 %561
  store double %229, ptr %563, align 8, !tbaa !43
  %564 = getelementptr inbounds nuw <2 x double>, ptr %524, i64 %561
  store double %229, ptr %564, align 8, !tbaa !43
  %565 = or disjoint i64 %561, 1
  %566 = getelementptr inbounds nuw <2 x double>, ptr %521, i64 %565
  store double %229, ptr %566, align 8, !tbaa !43
  %567 = getelementptr inbounds nuw <2 x double>, ptr %524, i64 %565
  store double %229, ptr %567, align 8, !tbaa !43
  %568 = add nuw nsw i64 %561, 2
  %569 = add i64 %562, 2
  %570 = icmp eq i64 %569, %528
  br i1 %570, label %550, label %560, !llvm.loop !177
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 16 dereferenceable(1584) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !178
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !179
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw [2 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %18 = getelementptr inbounds nuw double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !43
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !180
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %26 = getelementptr inbounds nuw double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !43
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %29 = getelementptr inbounds nuw double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !43
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
  br i1 %68, label %69, label %36, !llvm.loop !181

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !43
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %73 = getelementptr inbounds nuw double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !43
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %76 = getelementptr inbounds nuw double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !43
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 1552
  %78 = getelementptr inbounds nuw [2 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !43
  br label %292

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !43
  %82 = load double, ptr %35, align 8, !tbaa !43
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %84 = getelementptr inbounds nuw double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !43
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 1120
  %86 = getelementptr inbounds nuw double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !43
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !43
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1072
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !43
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !43
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 1088
  %94 = getelementptr inbounds nuw double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !43
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !43
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 1104
  %98 = getelementptr inbounds nuw double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !43
  %99 = load double, ptr %80, align 8, !tbaa !43
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %102 = getelementptr inbounds nuw double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !43
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %223

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 584
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %174

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1576
  %112 = load ptr, ptr %111, align 8, !tbaa !28
  %113 = and i64 %108, 3
  %114 = icmp ult i64 %108, 4
  br i1 %114, label %155, label %115

115:                                              ; preds = %110
  %116 = and i64 %108, 9223372036854775804
  br label %117

117:                                              ; preds = %117, %115
  %118 = phi <2 x double> [ zeroinitializer, %115 ], [ %151, %117 ]
  %119 = phi i64 [ 0, %115 ], [ %152, %117 ]
  %120 = phi i64 [ 0, %115 ], [ %153, %117 ]
  %121 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %119
  %122 = getelementptr inbounds nuw i8, ptr %121, i64 32
  %123 = load <2 x double>, ptr %122, align 16, !tbaa !26
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 1040
  %125 = load <2 x double>, ptr %124, align 16, !tbaa !26
  %126 = fmul <2 x double> %123, %125
  %127 = fadd <2 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 32
  %131 = load <2 x double>, ptr %130, align 16, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 1040
  %133 = load <2 x double>, ptr %132, align 16, !tbaa !26
  %134 = fmul <2 x double> %131, %133
  %135 = fadd <2 x double> %127, %134
  %136 = or disjoint i64 %119, 2
  %137 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %136
  %138 = getelementptr inbounds nuw i8, ptr %137, i64 32
  %139 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %140 = getelementptr inbounds nuw i8, ptr %137, i64 1040
  %141 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %142 = fmul <2 x double> %139, %141
  %143 = fadd <2 x double> %135, %142
  %144 = or disjoint i64 %119, 3
  %145 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %144
  %146 = getelementptr inbounds nuw i8, ptr %145, i64 32
  %147 = load <2 x double>, ptr %146, align 16, !tbaa !26
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 1040
  %149 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %150 = fmul <2 x double> %147, %149
  %151 = fadd <2 x double> %143, %150
  %152 = add nuw nsw i64 %119, 4
  %153 = add i64 %120, 4
  %154 = icmp eq i64 %153, %116
  br i1 %154, label %155, label %117, !llvm.loop !182

155:                                              ; preds = %117, %110
  %156 = phi <2 x double> [ poison, %110 ], [ %151, %117 ]
  %157 = phi <2 x double> [ zeroinitializer, %110 ], [ %151, %117 ]
  %158 = phi i64 [ 0, %110 ], [ %152, %117 ]
  %159 = icmp eq i64 %113, 0
  br i1 %159, label %174, label %160

160:                                              ; preds = %155, %160
  %161 = phi <2 x double> [ %170, %160 ], [ %157, %155 ]
  %162 = phi i64 [ %171, %160 ], [ %158, %155 ]
  %163 = phi i64 [ %172, %160 ], [ 0, %155 ]
  %164 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %162
  %165 = getelementptr inbounds nuw i8, ptr %164, i64 32
  %166 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %167 = getelementptr inbounds nuw i8, ptr %164, i64 1040
  %168 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %169 = fmul <2 x double> %166, %168
  %170 = fadd <2 x double> %161, %169
  %171 = add nuw nsw i64 %162, 1
  %172 = add i64 %163, 1
  %173 = icmp eq i64 %172, %113
  br i1 %173, label %174, label %160, !llvm.loop !183

174:                                              ; preds = %155, %160, %106
  %175 = phi <2 x double> [ zeroinitializer, %106 ], [ %156, %155 ], [ %170, %160 ]
  %176 = extractelement <2 x double> %175, i32 %2
  %177 = fmul double %176, 4.615260e+02
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %179 = getelementptr inbounds nuw double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !43
  %181 = fmul double %180, %177
  %182 = fdiv double %181, %30
  %183 = fcmp ogt double %182, 0.000000e+00
  %184 = fneg double %182
  %185 = select i1 %183, double %184, double -0.000000e+00
  %186 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %187 = getelementptr inbounds nuw double, ptr %186, i64 %10
  %188 = load double, ptr %187, align 8, !tbaa !43
  %189 = fdiv double %185, %188
  %190 = insertelement <2 x double> poison, double %189, i64 0
  %191 = shufflevector <2 x double> %190, <2 x double> poison, <2 x i32> zeroinitializer
  %192 = fcmp ogt <2 x double> %191, splat (double -7.000000e+02)
  %193 = select <2 x i1> %192, <2 x double> %191, <2 x double> splat (double -7.000000e+02)
  %194 = fcmp olt <2 x double> %193, splat (double 7.000000e+02)
  %195 = select <2 x i1> %194, <2 x double> %193, <2 x double> splat (double 7.000000e+02)
  %196 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %195, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %197 = fadd <2 x double> %196, splat (double 0xC338000000000000)
  %198 = fneg <2 x double> %197
  %199 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %198, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %195)
  %200 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %198, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %199)
  %201 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %200, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %202 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %201, <2 x double> %200, <2 x double> splat (double 0x3E5AE64567F544E4))
  %203 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %202, <2 x double> %200, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %204 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %203, <2 x double> %200, <2 x double> splat (double 0x3EC71DE3A556C734))
  %205 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %204, <2 x double> %200, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %206 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %205, <2 x double> %200, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %207 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %206, <2 x double> %200, <2 x double> splat (double 0x3F56C16C16C16C17))
  %208 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %207, <2 x double> %200, <2 x double> splat (double 0x3F81111111111111))
  %209 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %208, <2 x double> %200, <2 x double> splat (double 0x3FA5555555555555))
  %210 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %209, <2 x double> %200, <2 x double> splat (double 0x3FC5555555555555))
  %211 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %210, <2 x double> %200, <2 x double> splat (double 5.000000e-01))
  %212 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %211, <2 x double> %200, <2 x double> splat (double 1.000000e+00))
  %213 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %212, <2 x double> %200, <2 x double> splat (double 1.000000e+00))
  %214 = bitcast <2 x double> %196 to <2 x i64>
  %215 = shl <2 x i64> %214, splat (i64 52)
  %216 = bitcast <2 x double> %213 to <2 x i64>
  %217 = add <2 x i64> %215, %216
  %218 = bitcast <2 x i64> %217 to <2 x double>
  %219 = extractelement <2 x double> %218, i64 0
  %220 = fmul double %30, %219
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %222 = getelementptr inbounds nuw double, ptr %221, i64 %10
  store double %220, ptr %222, align 8, !tbaa !43
  br label %223

223:                                              ; preds = %79, %174
  %224 = fcmp une double %99, %103
  br i1 %224, label %225, label %264

225:                                              ; preds = %223
  %226 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %227 = getelementptr inbounds nuw double, ptr %226, i64 %10
  store double %99, ptr %227, align 8, !tbaa !43
  %228 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %229 = getelementptr inbounds nuw double, ptr %228, i64 %10
  store double %82, ptr %229, align 8, !tbaa !43
  %230 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %231 = getelementptr inbounds nuw double, ptr %230, i64 %10
  %232 = load double, ptr %231, align 8, !tbaa !43
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %234 = getelementptr inbounds nuw double, ptr %233, i64 %10
  store double %232, ptr %234, align 8, !tbaa !43
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %236 = getelementptr inbounds nuw i64, ptr %235, i64 %10
  store i64 -1, ptr %236, align 8, !tbaa !30
  %237 = fcmp oeq double %99, 0.000000e+00
  %238 = fcmp oeq double %99, 3.000000e+00
  %239 = or i1 %237, %238
  br i1 %239, label %240, label %248

240:                                              ; preds = %225
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %242 = getelementptr inbounds nuw double, ptr %241, i64 %10
  store double %30, ptr %242, align 8, !tbaa !43
  store double %30, ptr %26, align 8, !tbaa !43
  %243 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %244 = getelementptr inbounds nuw double, ptr %243, i64 %10
  %245 = load double, ptr %244, align 8, !tbaa !43
  %246 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %247 = getelementptr inbounds nuw double, ptr %246, i64 %10
  store double %245, ptr %247, align 8, !tbaa !43
  br label %248

248:                                              ; preds = %225, %240
  %249 = getelementptr inbounds nuw i8, ptr %0, i64 584
  %250 = load i64, ptr %249, align 8, !tbaa !20
  %251 = icmp sgt i64 %250, 0
  br i1 %251, label %252, label %264

252:                                              ; preds = %248
  %253 = getelementptr inbounds nuw i8, ptr %0, i64 1576
  %254 = load ptr, ptr %253, align 8, !tbaa !28
  %255 = getelementptr inbounds nuw i64, ptr %254, i64 %10
  %256 = sext i1 %238 to i64
  br label %257

257:                                              ; preds = %252, %257
  %258 = phi i64 [ 0, %252 ], [ %261, %257 ]
  %259 = getelementptr inbounds nuw %struct.Piece, ptr %255, i64 %258, i32 42
  store i64 -1, ptr %259, align 8, !tbaa !30
  %260 = getelementptr inbounds nuw %struct.Piece, ptr %255, i64 %258, i32 43
  store i64 %256, ptr %260, align 8, !tbaa !30
  %261 = add nuw nsw i64 %258, 1
  %262 = load i64, ptr %249, align 8, !tbaa !20
  %263 = icmp slt i64 %261, %262
  br i1 %263, label %257, label %264, !llvm.loop !184

264:                                              ; preds = %257, %248, %223
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !26
  %265 = getelementptr inbounds nuw i64, ptr %4, i64 %10
  store i64 -1, ptr %265, align 8, !tbaa !30
  %266 = load <2 x i64>, ptr %4, align 16, !tbaa !26
  %267 = getelementptr inbounds nuw i8, ptr %0, i64 736
  %268 = load <2 x double>, ptr %267, align 16, !tbaa !26
  %269 = getelementptr inbounds nuw i8, ptr %0, i64 80
  %270 = load <2 x double>, ptr %269, align 16, !tbaa !26
  %271 = fmul <2 x double> %270, splat (double 5.000000e-01)
  %272 = load <2 x double>, ptr %89, align 16, !tbaa !26
  %273 = fadd <2 x double> %272, %271
  %274 = fadd <2 x double> %273, splat (double -4.000000e-03)
  %275 = fcmp ult <2 x double> %268, %274
  %276 = fsub <2 x double> %272, %271
  %277 = fadd <2 x double> %276, splat (double 4.000000e-03)
  %278 = fcmp ole <2 x double> %268, %277
  %279 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %280 = load <2 x i64>, ptr %279, align 16, !tbaa !26
  %281 = select <2 x i1> %278, <2 x i64> splat (i64 -1), <2 x i64> %280
  %282 = select <2 x i1> %275, <2 x i64> %281, <2 x i64> zeroinitializer
  %283 = xor <2 x i64> %282, %280
  %284 = and <2 x i64> %283, %266
  %285 = and <2 x i64> %282, %266
  %286 = xor <2 x i64> %266, splat (i64 -1)
  %287 = and <2 x i64> %280, %286
  %288 = or disjoint <2 x i64> %285, %287
  store <2 x i64> %288, ptr %279, align 16, !tbaa !26
  %289 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %290 = load <2 x i64>, ptr %289, align 16, !tbaa !26
  %291 = or <2 x i64> %284, %290
  store <2 x i64> %291, ptr %289, align 16, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  br label %292

292:                                              ; preds = %264, %69
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(read, argmem: readwrite, inaccessiblemem: none)
define internal fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr nocapture noundef nonnull align 16 dereferenceable(1584) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, <2 x i64> noundef %3) unnamed_addr #4 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %6 = load <2 x double>, ptr %5, align 16, !tbaa !26
  %7 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %8 = load <2 x double>, ptr %7, align 16, !tbaa !26
  %9 = fadd <2 x double> %6, %8
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw i8, ptr %1, i64 136
  %12 = load ptr, ptr %11, align 8
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %14 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %15 = load ptr, ptr %14, align 8
  %16 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %17 = load ptr, ptr %16, align 8
  %18 = extractelement <2 x i64> %3, i64 0
  %19 = icmp eq i64 %18, 0
  br i1 %19, label %84, label %20

20:                                               ; preds = %4
  %21 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %22 = load i64, ptr %21, align 16, !tbaa !30
  %23 = shl nsw i64 %22, 1
  %24 = or disjoint i64 %23, %10
  %25 = getelementptr inbounds i64, ptr %12, i64 %24
  %26 = load i64, ptr %25, align 8, !tbaa !30
  %27 = getelementptr inbounds nuw [4 x i64], ptr %13, i64 0, i64 %10
  %28 = getelementptr inbounds i64, ptr %17, i64 %24
  %29 = load i64, ptr %28, align 8, !tbaa !30
  %30 = shl nsw i64 %29, 4
  %31 = getelementptr inbounds i8, ptr %15, i64 %30
  %32 = extractelement <2 x double> %9, i64 0
  %33 = load i64, ptr %27, align 8, !tbaa !30
  %34 = getelementptr i8, ptr %31, i64 -16
  %35 = icmp sgt i64 %33, 0
  br i1 %35, label %36, label %45

36:                                               ; preds = %20, %42
  %37 = phi i64 [ %43, %42 ], [ %33, %20 ]
  %38 = shl i64 %37, 4
  %39 = getelementptr i8, ptr %34, i64 %38
  %40 = load double, ptr %39, align 8, !tbaa !43
  %41 = fcmp ugt double %32, %40
  br i1 %41, label %45, label %42

42:                                               ; preds = %36
  %43 = add nsw i64 %37, -1
  store i64 %43, ptr %27, align 8, !tbaa !30
  %44 = icmp sgt i64 %37, 1
  br i1 %44, label %36, label %45, !llvm.loop !185

45:                                               ; preds = %36, %42, %20
  %46 = phi i64 [ %33, %20 ], [ %37, %36 ], [ %43, %42 ]
  %47 = icmp slt i64 %46, %26
  br i1 %47, label %48, label %57

48:                                               ; preds = %45, %54
  %49 = phi i64 [ %55, %54 ], [ %46, %45 ]
  %50 = shl nsw i64 %49, 4
  %51 = getelementptr inbounds i8, ptr %31, i64 %50
  %52 = load double, ptr %51, align 8, !tbaa !43
  %53 = fcmp ule double %32, %52
  br i1 %53, label %62, label %54

54:                                               ; preds = %48
  %55 = add i64 %49, 1
  store i64 %55, ptr %27, align 8, !tbaa !30
  %56 = icmp eq i64 %55, %26
  br i1 %56, label %57, label %48, !llvm.loop !186

57:                                               ; preds = %54, %45
  %58 = shl i64 %26, 4
  %59 = getelementptr i8, ptr %31, i64 %58
  %60 = getelementptr i8, ptr %59, i64 -8
  %61 = load double, ptr %60, align 8, !tbaa !43
  br label %81

62:                                               ; preds = %48
  %63 = shl nsw i64 %49, 1
  %64 = or disjoint i64 %63, 1
  %65 = getelementptr inbounds double, ptr %31, i64 %64
  %66 = load double, ptr %65, align 8, !tbaa !43
  %67 = icmp sgt i64 %49, 0
  br i1 %67, label %68, label %81

68:                                               ; preds = %62
  %69 = shl i64 %49, 4
  %70 = getelementptr i8, ptr %31, i64 %69
  %71 = getelementptr i8, ptr %70, i64 -8
  %72 = load double, ptr %71, align 8, !tbaa !43
  %73 = getelementptr i8, ptr %70, i64 -16
  %74 = load double, ptr %73, align 8, !tbaa !43
  %75 = fsub double %32, %74
  %76 = load double, ptr %70, align 8, !tbaa !43
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
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1480
  %90 = load i64, ptr %89, align 8, !tbaa !30
  %91 = shl nsw i64 %90, 1
  %92 = or disjoint i64 %91, %10
  %93 = getelementptr inbounds i64, ptr %12, i64 %92
  %94 = load i64, ptr %93, align 8, !tbaa !30
  %95 = or disjoint i64 %10, 2
  %96 = getelementptr inbounds nuw [4 x i64], ptr %13, i64 0, i64 %95
  %97 = getelementptr inbounds i64, ptr %17, i64 %92
  %98 = load i64, ptr %97, align 8, !tbaa !30
  %99 = shl nsw i64 %98, 4
  %100 = getelementptr inbounds i8, ptr %15, i64 %99
  %101 = extractelement <2 x double> %9, i64 1
  %102 = load i64, ptr %96, align 8, !tbaa !30
  %103 = getelementptr i8, ptr %100, i64 -16
  %104 = icmp sgt i64 %102, 0
  br i1 %104, label %105, label %114

105:                                              ; preds = %88, %111
  %106 = phi i64 [ %112, %111 ], [ %102, %88 ]
  %107 = shl i64 %106, 4
  %108 = getelementptr i8, ptr %103, i64 %107
  %109 = load double, ptr %108, align 8, !tbaa !43
  %110 = fcmp ugt double %101, %109
  br i1 %110, label %114, label %111

111:                                              ; preds = %105
  %112 = add nsw i64 %106, -1
  store i64 %112, ptr %96, align 8, !tbaa !30
  %113 = icmp sgt i64 %106, 1
  br i1 %113, label %105, label %114, !llvm.loop !185

114:                                              ; preds = %105, %111, %88
  %115 = phi i64 [ %102, %88 ], [ %106, %105 ], [ %112, %111 ]
  %116 = icmp slt i64 %115, %94
  br i1 %116, label %117, label %126

117:                                              ; preds = %114, %123
  %118 = phi i64 [ %124, %123 ], [ %115, %114 ]
  %119 = shl nsw i64 %118, 4
  %120 = getelementptr inbounds i8, ptr %100, i64 %119
  %121 = load double, ptr %120, align 8, !tbaa !43
  %122 = fcmp ule double %101, %121
  br i1 %122, label %131, label %123

123:                                              ; preds = %117
  %124 = add i64 %118, 1
  store i64 %124, ptr %96, align 8, !tbaa !30
  %125 = icmp eq i64 %124, %94
  br i1 %125, label %126, label %117, !llvm.loop !186

126:                                              ; preds = %123, %114
  %127 = shl i64 %94, 4
  %128 = getelementptr i8, ptr %100, i64 %127
  %129 = getelementptr i8, ptr %128, i64 -8
  %130 = load double, ptr %129, align 8, !tbaa !43
  br label %150

131:                                              ; preds = %117
  %132 = shl nsw i64 %118, 1
  %133 = or disjoint i64 %132, 1
  %134 = getelementptr inbounds double, ptr %100, i64 %133
  %135 = load double, ptr %134, align 8, !tbaa !43
  %136 = icmp sgt i64 %118, 0
  br i1 %136, label %137, label %150

137:                                              ; preds = %131
  %138 = shl i64 %118, 4
  %139 = getelementptr i8, ptr %100, i64 %138
  %140 = getelementptr i8, ptr %139, i64 -8
  %141 = load double, ptr %140, align 8, !tbaa !43
  %142 = getelementptr i8, ptr %139, i64 -16
  %143 = load double, ptr %142, align 8, !tbaa !43
  %144 = fsub double %101, %143
  %145 = load double, ptr %139, align 8, !tbaa !43
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
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 576, !6, i64 584, !6, i64 592, !6, i64 600, !6, i64 608, !6, i64 616, !7, i64 624, !7, i64 640, !7, i64 736, !7, i64 832, !7, i64 928, !7, i64 944, !7, i64 960, !7, i64 976, !7, i64 992, !7, i64 1008, !7, i64 1024, !7, i64 1040, !7, i64 1056, !7, i64 1072, !7, i64 1088, !7, i64 1104, !7, i64 1120, !7, i64 1136, !7, i64 1152, !7, i64 1168, !7, i64 1184, !7, i64 1200, !7, i64 1216, !7, i64 1232, !7, i64 1248, !7, i64 1264, !7, i64 1280, !7, i64 1296, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1536, !7, i64 1552, !11, i64 1568, !19, i64 1576}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 584}
!21 = !{!17, !6, i64 592}
!22 = !{!17, !6, i64 600}
!23 = !{!5, !6, i64 32}
!24 = !{!17, !6, i64 608}
!25 = !{!5, !9, i64 64}
!26 = !{!7, !7, i64 0}
!27 = !{!17, !6, i64 616}
!28 = !{!17, !19, i64 1576}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 2128}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 736, !7, i64 960, !7, i64 1184, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1520, !7, i64 1536, !7, i64 1552, !7, i64 1568, !7, i64 1584, !7, i64 1600, !7, i64 1616, !7, i64 1632, !7, i64 1648, !7, i64 1664, !7, i64 1680, !7, i64 1696, !7, i64 1712, !7, i64 1728, !7, i64 1744, !7, i64 1760, !7, i64 1776, !7, i64 1792, !7, i64 1808, !7, i64 1824, !7, i64 1840, !7, i64 1856, !7, i64 1872, !7, i64 1888, !7, i64 1904, !7, i64 1920, !7, i64 1936, !7, i64 1952, !34, i64 1968, !7, i64 2064, !7, i64 2080, !7, i64 2096, !7, i64 2112, !6, i64 2128, !11, i64 2136, !11, i64 2144, !11, i64 2152, !11, i64 2160, !11, i64 2168, !11, i64 2176, !11, i64 2184, !11, i64 2192, !11, i64 2200, !11, i64 2208, !11, i64 2216, !11, i64 2224, !11, i64 2232, !11, i64 2240, !11, i64 2248, !11, i64 2256, !11, i64 2264, !11, i64 2272, !11, i64 2280, !11, i64 2288, !11, i64 2296, !11, i64 2304, !11, i64 2312, !11, i64 2320}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560, !7, i64 576, !7, i64 592, !7, i64 608, !7, i64 624, !7, i64 640, !7, i64 656, !7, i64 672, !7, i64 688, !7, i64 704, !7, i64 720}
!34 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80}
!35 = !{!11, !11, i64 0}
!36 = !{!32, !11, i64 2248}
!37 = distinct !{!37, !38}
!38 = !{!"llvm.loop.mustprogress"}
!39 = !{!17, !11, i64 1568}
!40 = !{!5, !6, i64 0}
!41 = !{!5, !6, i64 176}
!42 = !{!5, !6, i64 184}
!43 = !{!9, !9, i64 0}
!44 = !{!5, !10, i64 208}
!45 = !{!5, !10, i64 192}
!46 = !{!5, !10, i64 200}
!47 = !{!32, !11, i64 2144}
!48 = !{!32, !11, i64 2176}
!49 = !{!32, !11, i64 2232}
!50 = !{!32, !11, i64 2312}
!51 = !{!32, !11, i64 2264}
!52 = distinct !{!52, !38}
!53 = distinct !{!53, !38}
!54 = distinct !{!54, !38}
!55 = distinct !{!55, !38}
!56 = distinct !{!56, !38}
!57 = !{!32, !11, i64 2152}
!58 = !{!32, !11, i64 2136}
!59 = !{!32, !11, i64 2160}
!60 = !{!32, !11, i64 2320}
!61 = distinct !{!61, !38}
!62 = !{!32, !11, i64 2272}
!63 = !{!32, !11, i64 2280}
!64 = distinct !{!64, !38}
!65 = !{!66}
!66 = distinct !{!66, !67, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!67 = distinct !{!67, !"_ZL4stirRK5GroupRK5Piece"}
!68 = !{!32, !11, i64 2168}
!69 = distinct !{!69, !38}
!70 = !{!71}
!71 = distinct !{!71, !72, !"_ZL11water_afterRK5GroupRK5PieceDv2_d: argument 0"}
!72 = distinct !{!72, !"_ZL11water_afterRK5GroupRK5PieceDv2_d"}
!73 = !{!32, !11, i64 2224}
!74 = distinct !{!74, !38}
!75 = distinct !{!75, !38}
!76 = distinct !{!76, !38}
!77 = distinct !{!77, !38}
!78 = !{!79}
!79 = distinct !{!79, !80, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!80 = distinct !{!80, !"_ZL4stirRK5GroupRK5Piece"}
!81 = !{!32, !11, i64 2200}
!82 = !{!32, !11, i64 2208}
!83 = !{!32, !11, i64 2216}
!84 = !{!32, !11, i64 2184}
!85 = !{!32, !11, i64 2192}
!86 = distinct !{!86, !38}
!87 = distinct !{!87, !38}
!88 = !{!32, !11, i64 2304}
!89 = distinct !{!89, !38}
!90 = !{!32, !11, i64 2288}
!91 = !{!32, !11, i64 2296}
!92 = distinct !{!92, !38}
!93 = distinct !{!93, !38}
!94 = distinct !{!94, !38}
!95 = distinct !{!95, !38}
!96 = !{!97}
!97 = distinct !{!97, !98, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!98 = distinct !{!98, !"_ZL9evaporateR5GroupDv2_d"}
!99 = !{!100, !97}
!100 = distinct !{!100, !101, !"_ZL8flash_ofRK5GroupR5PieceDv2_d: argument 0"}
!101 = distinct !{!101, !"_ZL8flash_ofRK5GroupR5PieceDv2_d"}
!102 = !{!103, !100, !97}
!103 = distinct !{!103, !104, !"_ZL11look_insideRK5GroupRK5PieceDv2_d: argument 0"}
!104 = distinct !{!104, !"_ZL11look_insideRK5GroupRK5PieceDv2_d"}
!105 = distinct !{!105, !38}
!106 = distinct !{!106, !38}
!107 = !{!108}
!108 = distinct !{!108, !109, !"_ZL7outflowRK5GroupDv2_dS2_: argument 0"}
!109 = distinct !{!109, !"_ZL7outflowRK5GroupDv2_dS2_"}
!110 = !{!111}
!111 = distinct !{!111, !112, !"_ZL8condenseR5GroupDv2_d: argument 0"}
!112 = distinct !{!112, !"_ZL8condenseR5GroupDv2_d"}
!113 = distinct !{!113, !38}
!114 = !{!115}
!115 = distinct !{!115, !116, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!116 = distinct !{!116, !"_ZL9evaporateR5GroupDv2_d"}
!117 = !{!118, !115}
!118 = distinct !{!118, !119, !"_ZL8flash_ofRK5GroupR5PieceDv2_d: argument 0"}
!119 = distinct !{!119, !"_ZL8flash_ofRK5GroupR5PieceDv2_d"}
!120 = !{!121, !118, !115}
!121 = distinct !{!121, !122, !"_ZL11look_insideRK5GroupRK5PieceDv2_d: argument 0"}
!122 = distinct !{!122, !"_ZL11look_insideRK5GroupRK5PieceDv2_d"}
!123 = distinct !{!123, !38}
!124 = distinct !{!124, !38}
!125 = !{!32, !11, i64 2256}
!126 = distinct !{!126, !38}
!127 = distinct !{!127, !38}
!128 = distinct !{!128, !38}
!129 = !{!130}
!130 = distinct !{!130, !131, !"_ZL11water_afterRK5GroupRK5PieceDv2_d: argument 0"}
!131 = distinct !{!131, !"_ZL11water_afterRK5GroupRK5PieceDv2_d"}
!132 = distinct !{!132, !38}
!133 = distinct !{!133, !38}
!134 = distinct !{!134, !38}
!135 = distinct !{!135, !38}
!136 = distinct !{!136, !137}
!137 = !{!"llvm.loop.unroll.disable"}
!138 = distinct !{!138, !38}
!139 = !{!32, !11, i64 2240}
!140 = distinct !{!140, !38}
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
!151 = !{!5, !6, i64 40}
!152 = distinct !{!152, !38}
!153 = distinct !{!153, !38}
!154 = !{!5, !6, i64 56}
!155 = !{!10, !10, i64 0}
!156 = !{!5, !12, i64 168}
!157 = !{!5, !10, i64 160}
!158 = distinct !{!158, !38}
!159 = distinct !{!159, !137}
!160 = distinct !{!160, !38}
!161 = distinct !{!161, !38}
!162 = distinct !{!162, !137}
!163 = distinct !{!163, !137}
!164 = !{!5, !10, i64 80}
!165 = !{!5, !10, i64 72}
!166 = !{!5, !10, i64 96}
!167 = !{!5, !12, i64 104}
!168 = distinct !{!168, !38}
!169 = distinct !{!169, !38}
!170 = distinct !{!170, !38}
!171 = distinct !{!171, !137}
!172 = distinct !{!172, !38}
!173 = distinct !{!173, !38}
!174 = distinct !{!174, !38}
!175 = distinct !{!175, !38}
!176 = distinct !{!176, !38}
!177 = distinct !{!177, !38}
!178 = !{!5, !10, i64 88}
!179 = !{!5, !12, i64 112}
!180 = !{!5, !12, i64 120}
!181 = distinct !{!181, !38}
!182 = distinct !{!182, !38}
!183 = distinct !{!183, !137}
!184 = distinct !{!184, !38}
!185 = distinct !{!185, !38}
!186 = distinct !{!186, !38}
