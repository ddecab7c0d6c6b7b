; Made by scripts/lanes.py from sources of sha256 0a0c4c7807021fcb27963ed7e94c9b9c993c10b40494922b339b63c5dbc3acfc.
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
  %17 = add i64 %16, 1680
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
  %10 = getelementptr inbounds nuw i8, ptr %1, i64 592
  store i64 %9, ptr %10, align 16, !tbaa !16
  %11 = getelementptr inbounds nuw i8, ptr %1, i64 600
  store i64 %9, ptr %11, align 8, !tbaa !20
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 16
  %13 = load i64, ptr %12, align 8, !tbaa !4
  %14 = getelementptr inbounds nuw i8, ptr %1, i64 608
  store i64 %13, ptr %14, align 16, !tbaa !21
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 24
  %16 = load i64, ptr %15, align 8, !tbaa !13
  %17 = getelementptr inbounds nuw i8, ptr %1, i64 616
  store i64 %16, ptr %17, align 8, !tbaa !22
  %18 = getelementptr inbounds nuw i8, ptr %0, i64 32
  %19 = load i64, ptr %18, align 8, !tbaa !23
  %20 = getelementptr inbounds nuw i8, ptr %1, i64 624
  store i64 %19, ptr %20, align 16, !tbaa !24
  %21 = getelementptr inbounds nuw i8, ptr %0, i64 64
  %22 = load double, ptr %21, align 8, !tbaa !25
  %23 = insertelement <2 x double> poison, double %22, i64 0
  %24 = shufflevector <2 x double> %23, <2 x double> poison, <2 x i32> zeroinitializer
  %25 = getelementptr inbounds nuw i8, ptr %1, i64 640
  store <2 x double> %24, ptr %25, align 16, !tbaa !26
  %26 = getelementptr inbounds nuw i8, ptr %1, i64 632
  store i64 0, ptr %26, align 8, !tbaa !27
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 1600
  %28 = getelementptr inbounds nuw i8, ptr %1, i64 1592
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
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 1584
  store ptr %106, ptr %107, align 16, !tbaa !39
  %108 = load i64, ptr %0, align 8, !tbaa !40
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %111

110:                                              ; preds = %105
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %114

111:                                              ; preds = %105
  %112 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %113 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  store i64 0, ptr %113, align 8, !tbaa !30
  store i64 0, ptr %112, align 8, !tbaa !30
  br label %114

114:                                              ; preds = %111, %110
  %115 = load i64, ptr %26, align 8, !tbaa !27
  %116 = load i64, ptr %0, align 8, !tbaa !40
  %117 = icmp slt i64 %115, %116
  br i1 %117, label %121, label %118

118:                                              ; preds = %114
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, i64 noundef 0) #7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 1416
  store i64 0, ptr %119, align 8, !tbaa !30
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 1432
  store i64 0, ptr %120, align 8, !tbaa !30
  br label %122

121:                                              ; preds = %114
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %122

122:                                              ; preds = %118, %121, %3
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %126 = load i64, ptr %124, align 8, !tbaa !41
  %127 = load i64, ptr %125, align 8, !tbaa !42
  %128 = sub nsw i64 %126, %127
  %129 = icmp slt i64 %128, 4
  br i1 %129, label %5789, label %130

130:                                              ; preds = %122
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 1568
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 608
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 616
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1488
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 1168
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 1184
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 1248
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 1328
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 592
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 1592
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %144 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 632
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 480
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 496
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 992
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 1296
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 1232
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 1040
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 416
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1440
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 16
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 32
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 1456
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 600
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 1072
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 1136
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 1280
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 1008
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 1264
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 944
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 976
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 1392
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 352
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 368
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 1344
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 528
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 400
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 304
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 288
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 224
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 240
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 208
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 272
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 1200
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 624
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 432
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 1312
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 1104
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 1120
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 464
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 1584
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 1056
  %228 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 1504
  %230 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %231 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %232 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 1552
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 544
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %262 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %263 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %264 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %265 = getelementptr inbounds nuw i8, ptr %1, i64 1576
  br label %266

266:                                              ; preds = %523, %130
  %267 = phi i1 [ true, %130 ], [ %526, %523 ]
  %268 = phi i64 [ 0, %130 ], [ %524, %523 ]
  %269 = phi i1 [ true, %130 ], [ %525, %523 ]
  %270 = getelementptr inbounds nuw i64, ptr %123, i64 %268
  %271 = load i64, ptr %270, align 8, !tbaa !30
  %272 = icmp eq i64 %271, 0
  br i1 %272, label %521, label %273

273:                                              ; preds = %266
  %274 = getelementptr inbounds nuw [2 x double], ptr %131, i64 0, i64 %268
  %275 = load double, ptr %274, align 8, !tbaa !43
  %276 = fcmp oeq double %275, 0.000000e+00
  br i1 %276, label %521, label %277

277:                                              ; preds = %273
  %278 = load i64, ptr %132, align 16, !tbaa !21
  %279 = load i64, ptr %133, align 8, !tbaa !22
  %280 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %268
  %281 = load i64, ptr %280, align 8, !tbaa !30
  %282 = load ptr, ptr %135, align 8, !tbaa !44
  %283 = mul nsw i64 %281, 40
  %284 = getelementptr inbounds i8, ptr %282, i64 %283
  %285 = getelementptr inbounds nuw double, ptr %136, i64 %268
  %286 = load double, ptr %285, align 8, !tbaa !43
  store double %286, ptr %284, align 8, !tbaa !43
  %287 = getelementptr inbounds nuw double, ptr %137, i64 %268
  %288 = load double, ptr %287, align 8, !tbaa !43
  %289 = getelementptr inbounds nuw i8, ptr %284, i64 8
  store double %288, ptr %289, align 8, !tbaa !43
  %290 = getelementptr inbounds nuw double, ptr %138, i64 %268
  %291 = load double, ptr %290, align 8, !tbaa !43
  %292 = getelementptr inbounds nuw i8, ptr %284, i64 16
  store double %291, ptr %292, align 8, !tbaa !43
  %293 = getelementptr inbounds nuw double, ptr %139, i64 %268
  %294 = load double, ptr %293, align 8, !tbaa !43
  %295 = getelementptr inbounds nuw i8, ptr %284, i64 24
  store double %294, ptr %295, align 8, !tbaa !43
  %296 = getelementptr inbounds nuw double, ptr %140, i64 %268
  %297 = load double, ptr %296, align 8, !tbaa !43
  %298 = getelementptr inbounds nuw i8, ptr %284, i64 32
  store double %297, ptr %298, align 8, !tbaa !43
  %299 = load i64, ptr %141, align 16, !tbaa !16
  %300 = icmp sgt i64 %299, 0
  br i1 %300, label %301, label %505

301:                                              ; preds = %277
  %302 = load ptr, ptr %142, align 8, !tbaa !28
  %303 = load ptr, ptr %143, align 8, !tbaa !45
  %304 = mul nsw i64 %299, %281
  %305 = mul i64 %278, 3
  %306 = load ptr, ptr %144, align 8, !tbaa !46
  %307 = icmp sgt i64 %278, 0
  %308 = getelementptr inbounds nuw double, ptr %4, i64 %268
  %309 = shl i64 %278, 4
  %310 = getelementptr inbounds nuw double, ptr %5, i64 %268
  %311 = icmp sgt i64 %279, 0
  %312 = and i64 %279, 1
  %313 = icmp eq i64 %279, 1
  %314 = and i64 %279, 9223372036854775806
  %315 = icmp eq i64 %312, 0
  br label %316

316:                                              ; preds = %413, %301
  %317 = phi i64 [ 0, %301 ], [ %480, %413 ]
  %318 = getelementptr inbounds nuw %struct.Piece, ptr %302, i64 %317
  %319 = getelementptr inbounds nuw i8, ptr %318, i64 384
  %320 = getelementptr inbounds nuw double, ptr %319, i64 %268
  %321 = load double, ptr %320, align 8, !tbaa !43
  %322 = getelementptr inbounds nuw i8, ptr %318, i64 1152
  %323 = getelementptr inbounds nuw double, ptr %322, i64 %268
  %324 = load double, ptr %323, align 8, !tbaa !43
  %325 = add nsw i64 %317, %304
  %326 = mul i64 %305, %325
  %327 = getelementptr inbounds double, ptr %303, i64 %326
  %328 = mul nsw i64 %325, 40
  %329 = getelementptr inbounds i8, ptr %306, i64 %328
  br i1 %307, label %330, label %347

330:                                              ; preds = %316
  %331 = getelementptr inbounds nuw i8, ptr %318, i64 2144
  %332 = load ptr, ptr %331, align 16, !tbaa !47
  %333 = getelementptr inbounds nuw i8, ptr %318, i64 2176
  %334 = load ptr, ptr %333, align 16, !tbaa !48
  %335 = getelementptr inbounds nuw double, ptr %334, i64 %268
  %336 = getelementptr double, ptr %327, i64 %278
  %337 = getelementptr inbounds nuw i8, ptr %318, i64 1168
  %338 = getelementptr inbounds nuw i8, ptr %318, i64 2232
  %339 = load ptr, ptr %338, align 8, !tbaa !49
  %340 = getelementptr inbounds nuw i8, ptr %318, i64 2128
  %341 = load i64, ptr %340, align 16, !tbaa !31
  %342 = getelementptr inbounds nuw i8, ptr %318, i64 96
  %343 = getelementptr inbounds nuw i8, ptr %318, i64 112
  %344 = getelementptr inbounds nuw i8, ptr %318, i64 128
  %345 = getelementptr inbounds nuw i8, ptr %318, i64 160
  %346 = getelementptr i8, ptr %327, i64 %309
  br label %360

347:                                              ; preds = %389, %316
  %348 = phi double [ %324, %316 ], [ %396, %389 ]
  br i1 %311, label %349, label %413

349:                                              ; preds = %347
  %350 = getelementptr inbounds nuw i8, ptr %318, i64 2312
  %351 = load ptr, ptr %350, align 8, !tbaa !50
  %352 = getelementptr inbounds nuw double, ptr %351, i64 %268
  %353 = getelementptr inbounds nuw i8, ptr %318, i64 192
  %354 = getelementptr inbounds nuw double, ptr %353, i64 %268
  %355 = load double, ptr %354, align 8, !tbaa !43
  %356 = getelementptr inbounds nuw i8, ptr %318, i64 2264
  %357 = load ptr, ptr %356, align 8, !tbaa !51
  %358 = getelementptr inbounds nuw double, ptr %357, i64 %268
  %359 = load double, ptr %352, align 8, !tbaa !43
  br i1 %313, label %399, label %482

360:                                              ; preds = %389, %330
  %361 = phi double [ %324, %330 ], [ %396, %389 ]
  %362 = phi i64 [ 0, %330 ], [ %397, %389 ]
  %363 = getelementptr inbounds nuw <2 x double>, ptr %332, i64 %362
  %364 = getelementptr inbounds nuw double, ptr %363, i64 %268
  %365 = load double, ptr %364, align 8, !tbaa !43
  %366 = getelementptr inbounds nuw double, ptr %327, i64 %362
  store double %365, ptr %366, align 8, !tbaa !43
  %367 = getelementptr inbounds nuw <2 x double>, ptr %335, i64 %362
  %368 = load double, ptr %367, align 8, !tbaa !43
  %369 = getelementptr double, ptr %336, i64 %362
  store double %368, ptr %369, align 8, !tbaa !43
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  %370 = load <2 x double>, ptr %337, align 16, !tbaa !26
  %371 = getelementptr inbounds nuw <2 x double>, ptr %339, i64 %362
  %372 = load <2 x double>, ptr %371, align 16, !tbaa !26
  %373 = icmp slt i64 %362, %341
  %374 = load <2 x double>, ptr %319, align 16
  %375 = fsub <2 x double> %370, %374
  %376 = select i1 %373, <2 x double> %374, <2 x double> %375
  %377 = fmul <2 x double> %372, %376
  store <2 x double> %377, ptr %4, align 16, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %5) #8
  %378 = load <2 x double>, ptr %363, align 16, !tbaa !26
  br i1 %373, label %379, label %381

379:                                              ; preds = %360
  %380 = load <2 x double>, ptr %345, align 16, !tbaa !26
  br label %389

381:                                              ; preds = %360
  %382 = load <2 x double>, ptr %342, align 16, !tbaa !26
  %383 = load <2 x double>, ptr %343, align 16, !tbaa !26
  %384 = load <2 x double>, ptr %344, align 16, !tbaa !26
  %385 = fmul <2 x double> %378, %384
  %386 = fmul <2 x double> %385, splat (double 0x3FD5555555555555)
  %387 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %383, <2 x double> splat (double 5.000000e-01), <2 x double> %386)
  %388 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %378, <2 x double> %387, <2 x double> %382)
  br label %389

389:                                              ; preds = %381, %379
  %390 = phi <2 x double> [ %380, %379 ], [ %388, %381 ]
  %391 = fmul <2 x double> %378, %390
  %392 = fmul <2 x double> %377, %391
  store <2 x double> %392, ptr %5, align 16, !tbaa !26
  %393 = load double, ptr %308, align 8, !tbaa !43
  %394 = getelementptr double, ptr %346, i64 %362
  store double %393, ptr %394, align 8, !tbaa !43
  %395 = load double, ptr %310, align 8, !tbaa !43
  %396 = fadd double %361, %395
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #8
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  %397 = add nuw nsw i64 %362, 1
  %398 = icmp eq i64 %397, %278
  br i1 %398, label %347, label %360, !llvm.loop !52

399:                                              ; preds = %482, %349
  %400 = phi double [ poison, %349 ], [ %502, %482 ]
  %401 = phi double [ %359, %349 ], [ %497, %482 ]
  %402 = phi double [ %348, %349 ], [ %502, %482 ]
  %403 = phi i64 [ 0, %349 ], [ %495, %482 ]
  br i1 %315, label %413, label %404

404:                                              ; preds = %399
  %405 = getelementptr <2 x double>, ptr %352, i64 %403
  %406 = getelementptr i8, ptr %405, i64 16
  %407 = load double, ptr %406, align 8, !tbaa !43
  %408 = fsub double %407, %401
  %409 = fmul double %355, %408
  %410 = getelementptr inbounds nuw <2 x double>, ptr %358, i64 %403
  %411 = load double, ptr %410, align 8, !tbaa !43
  %412 = tail call double @llvm.fmuladd.f64(double %409, double %411, double %402)
  br label %413

413:                                              ; preds = %404, %399, %347
  %414 = phi double [ %348, %347 ], [ %400, %399 ], [ %412, %404 ]
  %415 = getelementptr inbounds nuw i8, ptr %318, i64 240
  %416 = getelementptr inbounds nuw double, ptr %415, i64 %268
  %417 = load double, ptr %416, align 8, !tbaa !43
  %418 = getelementptr inbounds nuw i8, ptr %318, i64 96
  %419 = getelementptr inbounds nuw double, ptr %418, i64 %268
  %420 = load double, ptr %419, align 8, !tbaa !43
  %421 = getelementptr inbounds nuw i8, ptr %318, i64 112
  %422 = getelementptr inbounds nuw double, ptr %421, i64 %268
  %423 = load double, ptr %422, align 8, !tbaa !43
  %424 = getelementptr inbounds nuw i8, ptr %318, i64 128
  %425 = getelementptr inbounds nuw double, ptr %424, i64 %268
  %426 = load double, ptr %425, align 8, !tbaa !43
  %427 = fmul double %417, %426
  %428 = fdiv double %427, 3.000000e+00
  %429 = tail call double @llvm.fmuladd.f64(double %423, double 5.000000e-01, double %428)
  %430 = tail call double @llvm.fmuladd.f64(double %417, double %429, double %420)
  %431 = fmul double %417, %430
  %432 = getelementptr inbounds nuw i8, ptr %318, i64 352
  %433 = getelementptr inbounds nuw double, ptr %432, i64 %268
  %434 = load double, ptr %433, align 8, !tbaa !43
  %435 = fsub double %434, %321
  %436 = getelementptr inbounds nuw i8, ptr %318, i64 160
  %437 = getelementptr inbounds nuw double, ptr %436, i64 %268
  %438 = load double, ptr %437, align 8, !tbaa !43
  %439 = fmul double %321, %438
  %440 = fmul double %417, %439
  %441 = tail call double @llvm.fmuladd.f64(double %435, double %431, double %440)
  %442 = getelementptr inbounds nuw i8, ptr %318, i64 1056
  %443 = getelementptr inbounds nuw double, ptr %442, i64 %268
  %444 = load double, ptr %443, align 8, !tbaa !43
  %445 = getelementptr inbounds nuw i8, ptr %318, i64 1072
  %446 = getelementptr inbounds nuw double, ptr %445, i64 %268
  %447 = load double, ptr %446, align 8, !tbaa !43
  %448 = fsub double %444, %447
  %449 = fsub double %414, %441
  %450 = fsub double %448, %449
  %451 = fcmp ogt double %444, 0.000000e+00
  %452 = fneg double %444
  %453 = select i1 %451, double %444, double %452
  %454 = fcmp ogt double %447, 0.000000e+00
  %455 = fneg double %447
  %456 = select i1 %454, double %447, double %455
  %457 = fadd double %453, %456
  %458 = fcmp ogt double %450, 0.000000e+00
  %459 = fneg double %450
  %460 = select i1 %458, double %450, double %459
  %461 = fcmp ogt double %457, 1.000000e+00
  %462 = select i1 %461, double %457, double 1.000000e+00
  %463 = fdiv double %460, %462
  store double %463, ptr %329, align 8, !tbaa !43
  %464 = getelementptr inbounds nuw i8, ptr %318, i64 1040
  %465 = getelementptr inbounds nuw double, ptr %464, i64 %268
  %466 = load double, ptr %465, align 8, !tbaa !43
  %467 = getelementptr inbounds nuw i8, ptr %329, i64 8
  store double %466, ptr %467, align 8, !tbaa !43
  %468 = getelementptr inbounds nuw i8, ptr %318, i64 992
  %469 = getelementptr inbounds nuw double, ptr %468, i64 %268
  %470 = load double, ptr %469, align 8, !tbaa !43
  %471 = getelementptr inbounds nuw i8, ptr %329, i64 16
  store double %470, ptr %471, align 8, !tbaa !43
  %472 = getelementptr inbounds nuw i8, ptr %318, i64 1008
  %473 = getelementptr inbounds nuw double, ptr %472, i64 %268
  %474 = load double, ptr %473, align 8, !tbaa !43
  %475 = getelementptr inbounds nuw i8, ptr %329, i64 24
  store double %474, ptr %475, align 8, !tbaa !43
  %476 = getelementptr inbounds nuw i8, ptr %318, i64 976
  %477 = getelementptr inbounds nuw double, ptr %476, i64 %268
  %478 = load double, ptr %477, align 8, !tbaa !43
  %479 = getelementptr inbounds nuw i8, ptr %329, i64 32
  store double %478, ptr %479, align 8, !tbaa !43
  %480 = add nuw nsw i64 %317, 1
  %481 = icmp eq i64 %480, %299
  br i1 %481, label %505, label %316, !llvm.loop !53

482:                                              ; preds = %349, %482
  %483 = phi double [ %497, %482 ], [ %359, %349 ]
  %484 = phi double [ %502, %482 ], [ %348, %349 ]
  %485 = phi i64 [ %495, %482 ], [ 0, %349 ]
  %486 = phi i64 [ %503, %482 ], [ 0, %349 ]
  %487 = or disjoint i64 %485, 1
  %488 = getelementptr inbounds nuw <2 x double>, ptr %352, i64 %487
  %489 = load double, ptr %488, align 8, !tbaa !43
  %490 = fsub double %489, %483
  %491 = fmul double %355, %490
  %492 = getelementptr inbounds nuw <2 x double>, ptr %358, i64 %485
  %493 = load double, ptr %492, align 8, !tbaa !43
  %494 = tail call double @llvm.fmuladd.f64(double %491, double %493, double %484)
  %495 = add nuw nsw i64 %485, 2
  %496 = getelementptr inbounds nuw <2 x double>, ptr %352, i64 %495
  %497 = load double, ptr %496, align 8, !tbaa !43
  %498 = fsub double %497, %489
  %499 = fmul double %355, %498
  %500 = getelementptr inbounds nuw <2 x double>, ptr %358, i64 %487
  %501 = load double, ptr %500, align 8, !tbaa !43
  %502 = tail call double @llvm.fmuladd.f64(double %499, double %501, double %494)
  %503 = add i64 %486, 2
  %504 = icmp eq i64 %503, %314
  br i1 %504, label %399, label %482, !llvm.loop !54

505:                                              ; preds = %413, %277
  %506 = load i64, ptr %145, align 8, !tbaa !27
  %507 = load i64, ptr %0, align 8, !tbaa !40
  %508 = icmp slt i64 %506, %507
  br i1 %508, label %511, label %509

509:                                              ; preds = %505
  store i64 0, ptr %270, align 8, !tbaa !30
  %510 = getelementptr inbounds nuw i64, ptr %146, i64 %268
  store i64 0, ptr %510, align 8, !tbaa !30
  br label %518

511:                                              ; preds = %505
  %512 = trunc nuw nsw i64 %268 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %512) #7
  %513 = load i64, ptr %270, align 8, !tbaa !30
  %514 = icmp eq i64 %513, 0
  br i1 %514, label %518, label %515

515:                                              ; preds = %511
  %516 = load double, ptr %274, align 8, !tbaa !43
  %517 = fcmp oeq double %516, 0.000000e+00
  br label %518

518:                                              ; preds = %509, %515, %511
  %519 = phi i1 [ true, %511 ], [ %517, %515 ], [ true, %509 ]
  %520 = and i1 %269, %519
  br label %521

521:                                              ; preds = %518, %273, %266
  %522 = phi i1 [ %269, %273 ], [ %520, %518 ], [ %269, %266 ]
  br i1 %267, label %523, label %527

523:                                              ; preds = %521, %528
  %524 = phi i64 [ 1, %521 ], [ 0, %528 ]
  %525 = phi i1 [ %522, %521 ], [ true, %528 ]
  %526 = xor i1 %267, true
  br label %266, !llvm.loop !55

527:                                              ; preds = %521
  br i1 %522, label %533, label %528

528:                                              ; preds = %5770, %5788, %5785, %3951, %4295, %527
  %529 = load i64, ptr %124, align 8, !tbaa !41
  %530 = load i64, ptr %125, align 8, !tbaa !42
  %531 = sub nsw i64 %529, %530
  %532 = icmp slt i64 %531, 4
  br i1 %532, label %5789, label %523

533:                                              ; preds = %527
  %534 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %535 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %534)
  %536 = icmp eq i64 %535, 0
  br i1 %536, label %5789, label %537

537:                                              ; preds = %533
  %538 = load <2 x i64>, ptr %146, align 16, !tbaa !26
  %539 = and <2 x i64> %538, %534
  %540 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %539)
  %541 = icmp eq i64 %540, 0
  %542 = load i64, ptr %169, align 8, !tbaa !20
  br i1 %541, label %1468, label %543

543:                                              ; preds = %537
  %544 = load <2 x double>, ptr %147, align 16, !tbaa !26
  %545 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %546 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %547 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %548 = fsub <2 x double> %546, %547
  %549 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %545, <2 x double> %548, <2 x double> %544)
  %550 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %551 = fcmp une <2 x double> %550, splat (double 2.000000e+00)
  %552 = select <2 x i1> %551, <2 x double> splat (double 1.000000e+00), <2 x double> splat (double 5.000000e-01)
  %553 = fmul <2 x double> %549, %552
  %554 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %555 = load <2 x double>, ptr %153, align 16, !tbaa !26
  %556 = fcmp olt <2 x double> %554, %555
  %557 = select <2 x i1> %556, <2 x double> %554, <2 x double> %555
  %558 = fcmp olt <2 x double> %557, %553
  %559 = select <2 x i1> %558, <2 x double> %557, <2 x double> %553
  %560 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %561 = fmul <2 x double> %560, splat (double 5.000000e-01)
  %562 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %563 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %564 = fneg <2 x double> %561
  %565 = icmp eq <2 x i64> %563, zeroinitializer
  %566 = select <2 x i1> %565, <2 x double> %564, <2 x double> %561
  %567 = fadd <2 x double> %562, %566
  %568 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %569 = fsub <2 x double> %567, %568
  %570 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %571 = select <2 x i1> %565, <2 x double> zeroinitializer, <2 x double> %570
  %572 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %573 = fsub <2 x double> %571, %572
  %574 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %575 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %576 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %577 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %576, <2 x double> %568, <2 x double> %575)
  %578 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %579 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %574, <2 x double> %577, <2 x double> %578)
  %580 = fdiv <2 x double> %573, %579
  %581 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %582 = fsub <2 x double> %568, %581
  %583 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %584 = fdiv <2 x double> %582, %583
  %585 = fsub <2 x double> %580, %584
  %586 = fdiv <2 x double> %585, %583
  %587 = fdiv <2 x double> %569, %580
  %588 = load <2 x i64>, ptr %165, align 16, !tbaa !26
  %589 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %590 = or <2 x i64> %589, %588
  %591 = icmp eq <2 x i64> %590, zeroinitializer
  %592 = select <2 x i1> %591, <2 x double> %586, <2 x double> zeroinitializer
  %593 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %592, <2 x double> %587, <2 x double> %580)
  %594 = fdiv <2 x double> %569, %593
  %595 = fcmp ule <2 x double> %594, zeroinitializer
  %596 = select <2 x i1> %595, <2 x double> %587, <2 x double> %594
  %597 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %598 = fcmp une <2 x double> %597, zeroinitializer
  %599 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %600 = fcmp une <2 x double> %599, zeroinitializer
  %601 = fcmp ule <2 x double> %570, zeroinitializer
  %602 = or <2 x i1> %601, %598
  %603 = fcmp ule <2 x double> %587, zeroinitializer
  %604 = or <2 x i1> %603, %602
  %605 = or <2 x i1> %600, %604
  %606 = select <2 x i1> %605, <2 x double> splat (double 1.000000e+09), <2 x double> %596
  %607 = icmp sgt i64 %542, 0
  br i1 %607, label %608, label %673

608:                                              ; preds = %543
  %609 = load ptr, ptr %142, align 8, !tbaa !28
  %610 = fmul <2 x double> %583, splat (double 3.000000e+00)
  br label %611

611:                                              ; preds = %608, %611
  %612 = phi <2 x double> [ %606, %608 ], [ %670, %611 ]
  %613 = phi i64 [ 0, %608 ], [ %671, %611 ]
  %614 = getelementptr inbounds nuw %struct.Piece, ptr %609, i64 %613
  %615 = getelementptr inbounds nuw i8, ptr %614, i64 976
  %616 = load <2 x double>, ptr %615, align 16, !tbaa !26
  %617 = getelementptr inbounds nuw i8, ptr %614, i64 368
  %618 = load <2 x double>, ptr %617, align 16, !tbaa !26
  %619 = fsub <2 x double> %616, %618
  %620 = getelementptr inbounds nuw i8, ptr %614, i64 208
  %621 = load <2 x double>, ptr %620, align 16, !tbaa !26
  %622 = fmul <2 x double> %619, %621
  %623 = getelementptr inbounds nuw i8, ptr %614, i64 400
  %624 = load <2 x double>, ptr %623, align 16, !tbaa !26
  %625 = getelementptr inbounds nuw i8, ptr %614, i64 1040
  %626 = load <2 x double>, ptr %625, align 16, !tbaa !26
  %627 = fsub <2 x double> %624, %626
  %628 = getelementptr inbounds nuw i8, ptr %614, i64 2080
  %629 = load <2 x i64>, ptr %628, align 16, !tbaa !26
  %630 = getelementptr inbounds nuw i8, ptr %614, i64 1920
  %631 = load <2 x double>, ptr %630, align 16, !tbaa !26
  %632 = fcmp une <2 x double> %631, splat (double 1.000000e+00)
  %633 = select <2 x i1> %632, <2 x double> %622, <2 x double> %627
  %634 = getelementptr inbounds nuw i8, ptr %614, i64 992
  %635 = load <2 x double>, ptr %634, align 16, !tbaa !26
  %636 = icmp eq <2 x i64> %629, zeroinitializer
  %637 = select <2 x i1> %636, <2 x double> %635, <2 x double> %633
  %638 = getelementptr inbounds nuw i8, ptr %614, i64 1504
  %639 = load <2 x double>, ptr %638, align 16, !tbaa !26
  %640 = getelementptr inbounds nuw i8, ptr %614, i64 1888
  %641 = load <2 x double>, ptr %640, align 16, !tbaa !26
  %642 = fdiv <2 x double> %641, %583
  %643 = select <2 x i1> %636, <2 x double> %642, <2 x double> zeroinitializer
  %644 = fsub <2 x double> %639, %643
  %645 = fdiv <2 x double> %637, %644
  %646 = getelementptr inbounds nuw i8, ptr %614, i64 1216
  %647 = load <2 x double>, ptr %646, align 16, !tbaa !26
  %648 = fsub <2 x double> %647, %635
  %649 = fdiv <2 x double> %648, %583
  %650 = getelementptr inbounds nuw i8, ptr %614, i64 2096
  %651 = load <2 x i64>, ptr %650, align 16, !tbaa !26
  %652 = or <2 x i64> %651, %629
  %653 = fcmp ule <2 x double> %645, %610
  %654 = fsub <2 x double> %644, %649
  %655 = icmp eq <2 x i64> %652, zeroinitializer
  %656 = select <2 x i1> %653, <2 x i1> %655, <2 x i1> zeroinitializer
  %657 = select <2 x i1> %656, <2 x double> %654, <2 x double> zeroinitializer
  %658 = fdiv <2 x double> %645, %583
  %659 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %657, <2 x double> %658, <2 x double> %644)
  %660 = fdiv <2 x double> %637, %659
  %661 = fcmp ule <2 x double> %660, zeroinitializer
  %662 = select <2 x i1> %661, <2 x double> %645, <2 x double> %660
  %663 = fcmp ule <2 x double> %637, zeroinitializer
  %664 = fcmp ule <2 x double> %644, zeroinitializer
  %665 = or <2 x i1> %663, %664
  %666 = fcmp ogt <2 x double> %662, splat (double 1.000000e-03)
  %667 = select <2 x i1> %666, <2 x double> %662, <2 x double> splat (double 1.000000e-03)
  %668 = select <2 x i1> %665, <2 x double> splat (double 1.000000e+09), <2 x double> %667
  %669 = fcmp olt <2 x double> %612, %668
  %670 = select <2 x i1> %669, <2 x double> %612, <2 x double> %668
  %671 = add nuw nsw i64 %613, 1
  %672 = icmp eq i64 %671, %542
  br i1 %672, label %673, label %611, !llvm.loop !56

673:                                              ; preds = %611, %543
  %674 = phi <2 x double> [ %606, %543 ], [ %670, %611 ]
  %675 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %676 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %677 = fadd <2 x double> %675, %676
  %678 = fsub <2 x double> %677, %546
  %679 = fmul <2 x double> %674, splat (double 1.050000e+00)
  %680 = fcmp ugt <2 x double> %678, %679
  %681 = select <2 x i1> %680, <2 x double> %674, <2 x double> %678
  %682 = fmul <2 x double> %559, splat (double 0x3FF000010C6F7A0B)
  %683 = fcmp ole <2 x double> %681, %682
  %684 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %685 = fcmp ogt <2 x double> %684, %559
  %686 = select <2 x i1> %685, <2 x double> %684, <2 x double> %559
  %687 = icmp ne <2 x i64> %539, zeroinitializer
  %688 = select <2 x i1> %683, <2 x i1> %687, <2 x i1> zeroinitializer
  %689 = select <2 x i1> %688, <2 x double> %686, <2 x double> %684
  store <2 x double> %689, ptr %172, align 16, !tbaa !26
  %690 = fmul <2 x double> %559, splat (double 2.000000e+00)
  %691 = fcmp uge <2 x double> %681, %690
  %692 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %693 = fcmp une <2 x double> %692, zeroinitializer
  %694 = or <2 x i1> %693, %691
  %695 = fmul <2 x double> %681, splat (double 5.000000e-01)
  %696 = select <2 x i1> %694, <2 x double> %559, <2 x double> %695
  %697 = select <2 x i1> %683, <2 x double> %681, <2 x double> %696
  %698 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %699 = icmp eq <2 x i64> %539, zeroinitializer
  %700 = select <2 x i1> %699, <2 x double> %698, <2 x double> %697
  store <2 x double> %700, ptr %173, align 16, !tbaa !26
  %701 = fdiv <2 x double> %700, %583
  %702 = fdiv <2 x double> splat (double 1.000000e+00), %700
  %703 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %701, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %704 = fadd <2 x double> %701, splat (double 1.000000e+00)
  %705 = fdiv <2 x double> %703, %704
  %706 = fmul <2 x double> %702, %705
  %707 = icmp eq <2 x i64> %588, zeroinitializer
  %708 = select <2 x i1> %707, <2 x double> %706, <2 x double> %702
  %709 = fneg <2 x double> %702
  %710 = fneg <2 x double> %704
  %711 = fmul <2 x double> %702, %710
  %712 = select <2 x i1> %707, <2 x double> %711, <2 x double> %709
  %713 = fmul <2 x double> %701, %701
  %714 = fdiv <2 x double> %713, %704
  %715 = fmul <2 x double> %702, %714
  %716 = select <2 x i1> %707, <2 x double> %715, <2 x double> zeroinitializer
  %717 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %718 = select <2 x i1> %699, <2 x double> %717, <2 x double> %708
  store <2 x double> %718, ptr %175, align 16, !tbaa !26
  %719 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %720 = select <2 x i1> %699, <2 x double> %719, <2 x double> %712
  store <2 x double> %720, ptr %176, align 16, !tbaa !26
  %721 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %722 = select <2 x i1> %699, <2 x double> %721, <2 x double> %716
  store <2 x double> %722, ptr %177, align 16, !tbaa !26
  %723 = select <2 x i1> %707, <2 x double> %701, <2 x double> zeroinitializer
  %724 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %723, <2 x double> %582, <2 x double> %568)
  %725 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %726 = select <2 x i1> %699, <2 x double> %725, <2 x double> %724
  %727 = load <2 x double>, ptr %237, align 16, !tbaa !26
  %728 = load <2 x double>, ptr %238, align 16, !tbaa !26
  %729 = fsub <2 x double> %727, %728
  %730 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %723, <2 x double> %729, <2 x double> %727)
  %731 = load <2 x double>, ptr %236, align 16, !tbaa !26
  %732 = select <2 x i1> %699, <2 x double> %731, <2 x double> %730
  store <2 x double> %732, ptr %236, align 16, !tbaa !26
  %733 = load <2 x double>, ptr %240, align 16, !tbaa !26
  %734 = load <2 x double>, ptr %241, align 16, !tbaa !26
  %735 = fsub <2 x double> %733, %734
  %736 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %723, <2 x double> %735, <2 x double> %733)
  %737 = load <2 x double>, ptr %239, align 16, !tbaa !26
  %738 = select <2 x i1> %699, <2 x double> %737, <2 x double> %736
  store <2 x double> %738, ptr %239, align 16, !tbaa !26
  %739 = load <2 x double>, ptr %243, align 16, !tbaa !26
  %740 = load <2 x double>, ptr %244, align 16, !tbaa !26
  %741 = fsub <2 x double> %739, %740
  %742 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %723, <2 x double> %741, <2 x double> %739)
  %743 = load <2 x double>, ptr %242, align 16, !tbaa !26
  %744 = select <2 x i1> %699, <2 x double> %743, <2 x double> %742
  store <2 x double> %744, ptr %242, align 16, !tbaa !26
  %745 = load <2 x double>, ptr %246, align 16, !tbaa !26
  %746 = load <2 x double>, ptr %247, align 16, !tbaa !26
  %747 = fsub <2 x double> %745, %746
  %748 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %723, <2 x double> %747, <2 x double> %745)
  %749 = load <2 x double>, ptr %245, align 16, !tbaa !26
  %750 = select <2 x i1> %699, <2 x double> %749, <2 x double> %748
  store <2 x double> %750, ptr %245, align 16, !tbaa !26
  %751 = load <2 x double>, ptr %249, align 16, !tbaa !26
  %752 = load <2 x double>, ptr %250, align 16, !tbaa !26
  %753 = fsub <2 x double> %751, %752
  %754 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %723, <2 x double> %753, <2 x double> %751)
  %755 = load <2 x double>, ptr %248, align 16, !tbaa !26
  %756 = select <2 x i1> %699, <2 x double> %755, <2 x double> %754
  store <2 x double> %756, ptr %248, align 16, !tbaa !26
  %757 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %758 = icmp eq <2 x i64> %757, zeroinitializer
  %759 = select <2 x i1> %758, <2 x double> zeroinitializer, <2 x double> %570
  %760 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %761 = fsub <2 x double> %759, %760
  %762 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %763 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %576, <2 x double> %762, <2 x double> %575)
  %764 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %574, <2 x double> %763, <2 x double> %578)
  %765 = fdiv <2 x double> %761, %764
  %766 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %767 = load <2 x i64>, ptr %165, align 16, !tbaa !26
  %768 = or <2 x i64> %767, %766
  %769 = and <2 x i64> %768, %539
  %770 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %700, <2 x double> %765, <2 x double> %762)
  %771 = icmp eq <2 x i64> %769, zeroinitializer
  %772 = select <2 x i1> %600, <2 x i1> splat (i1 true), <2 x i1> %771
  %773 = select <2 x i1> %772, <2 x double> %726, <2 x double> %770
  store <2 x double> %773, ptr %178, align 16, !tbaa !26
  %774 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %775 = select <2 x i1> %699, <2 x double> %774, <2 x double> %761
  store <2 x double> %775, ptr %179, align 16, !tbaa !26
  %776 = xor <2 x i64> %767, splat (i64 -1)
  %777 = and <2 x i64> %766, %776
  store <2 x i64> %777, ptr %166, align 16, !tbaa !26
  %778 = load i64, ptr %169, align 8, !tbaa !20
  %779 = icmp sgt i64 %778, 0
  br i1 %779, label %780, label %1455

780:                                              ; preds = %673
  %781 = xor <2 x i64> %539, splat (i64 -1)
  br label %782

782:                                              ; preds = %780, %1412
  %783 = phi i64 [ 0, %780 ], [ %1428, %1412 ]
  %784 = load ptr, ptr %142, align 8, !tbaa !28
  %785 = getelementptr inbounds nuw %struct.Piece, ptr %784, i64 %783
  %786 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %787 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %788 = getelementptr inbounds nuw i8, ptr %785, i64 2096
  %789 = load <2 x i64>, ptr %788, align 16, !tbaa !26
  %790 = fdiv <2 x double> %786, %787
  %791 = fdiv <2 x double> splat (double 1.000000e+00), %786
  %792 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %790, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %793 = fadd <2 x double> %790, splat (double 1.000000e+00)
  %794 = fdiv <2 x double> %792, %793
  %795 = fmul <2 x double> %791, %794
  %796 = icmp eq <2 x i64> %789, zeroinitializer
  %797 = select <2 x i1> %796, <2 x double> %795, <2 x double> %791
  %798 = fneg <2 x double> %791
  %799 = fneg <2 x double> %793
  %800 = fmul <2 x double> %791, %799
  %801 = select <2 x i1> %796, <2 x double> %800, <2 x double> %798
  %802 = fmul <2 x double> %790, %790
  %803 = fdiv <2 x double> %802, %793
  %804 = fmul <2 x double> %791, %803
  %805 = select <2 x i1> %796, <2 x double> %804, <2 x double> zeroinitializer
  %806 = getelementptr inbounds nuw i8, ptr %785, i64 1408
  %807 = load <2 x double>, ptr %806, align 16, !tbaa !26
  %808 = select <2 x i1> %699, <2 x double> %807, <2 x double> %797
  store <2 x double> %808, ptr %806, align 16, !tbaa !26
  %809 = getelementptr inbounds nuw i8, ptr %785, i64 1424
  %810 = load <2 x double>, ptr %809, align 16, !tbaa !26
  %811 = select <2 x i1> %699, <2 x double> %810, <2 x double> %801
  store <2 x double> %811, ptr %809, align 16, !tbaa !26
  %812 = getelementptr inbounds nuw i8, ptr %785, i64 1440
  %813 = load <2 x double>, ptr %812, align 16, !tbaa !26
  %814 = select <2 x i1> %699, <2 x double> %813, <2 x double> %805
  store <2 x double> %814, ptr %812, align 16, !tbaa !26
  %815 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %816 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %817 = fdiv <2 x double> %815, %816
  %818 = select <2 x i1> %796, <2 x double> %817, <2 x double> zeroinitializer
  %819 = getelementptr inbounds nuw i8, ptr %785, i64 736
  %820 = getelementptr inbounds nuw i8, ptr %785, i64 960
  %821 = getelementptr inbounds nuw i8, ptr %785, i64 1184
  br label %1431

822:                                              ; preds = %1431
  %823 = getelementptr inbounds nuw i8, ptr %785, i64 1520
  %824 = getelementptr inbounds nuw i8, ptr %785, i64 880
  %825 = load <2 x double>, ptr %824, align 16, !tbaa !26
  %826 = fcmp ogt <2 x double> %825, zeroinitializer
  %827 = select <2 x i1> %826, <2 x double> %825, <2 x double> zeroinitializer
  %828 = load <2 x double>, ptr %823, align 16, !tbaa !26
  %829 = select <2 x i1> %699, <2 x double> %828, <2 x double> %827
  store <2 x double> %829, ptr %823, align 16, !tbaa !26
  %830 = getelementptr inbounds nuw i8, ptr %785, i64 96
  %831 = load <2 x double>, ptr %830, align 16, !tbaa !26
  %832 = getelementptr inbounds nuw i8, ptr %785, i64 112
  %833 = load <2 x double>, ptr %832, align 16, !tbaa !26
  %834 = getelementptr inbounds nuw i8, ptr %785, i64 128
  %835 = load <2 x double>, ptr %834, align 16, !tbaa !26
  %836 = getelementptr inbounds nuw i8, ptr %785, i64 160
  %837 = load <2 x double>, ptr %836, align 16, !tbaa !26
  %838 = getelementptr inbounds nuw i8, ptr %785, i64 192
  %839 = load <2 x double>, ptr %838, align 16, !tbaa !26
  %840 = getelementptr inbounds nuw i8, ptr %785, i64 208
  %841 = getelementptr inbounds nuw i8, ptr %785, i64 384
  %842 = load <2 x double>, ptr %841, align 16, !tbaa !26
  %843 = getelementptr inbounds nuw i8, ptr %785, i64 400
  %844 = getelementptr inbounds nuw i8, ptr %785, i64 1168
  %845 = load <2 x double>, ptr %844, align 16, !tbaa !26
  %846 = fsub <2 x double> %845, %842
  %847 = getelementptr inbounds nuw i8, ptr %785, i64 1392
  %848 = load <2 x double>, ptr %847, align 16, !tbaa !26
  %849 = fsub <2 x double> %848, %842
  %850 = load <2 x double>, ptr %809, align 16, !tbaa !26
  %851 = load <2 x double>, ptr %812, align 16, !tbaa !26
  %852 = fmul <2 x double> %846, %850
  %853 = fmul <2 x double> %849, %851
  %854 = fmul <2 x double> %842, %850
  %855 = fmul <2 x double> %837, %854
  %856 = fmul <2 x double> %842, %851
  %857 = fmul <2 x double> %837, %856
  %858 = getelementptr inbounds nuw i8, ptr %785, i64 2144
  %859 = load ptr, ptr %858, align 16, !tbaa !47
  %860 = getelementptr inbounds nuw i8, ptr %785, i64 2152
  %861 = load ptr, ptr %860, align 8, !tbaa !57
  %862 = getelementptr inbounds nuw i8, ptr %785, i64 2232
  %863 = load ptr, ptr %862, align 8, !tbaa !49
  %864 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %865 = and <2 x i64> %864, %781
  %866 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %865)
  %867 = icmp eq i64 %866, 0
  %868 = getelementptr inbounds nuw i8, ptr %785, i64 2136
  %869 = load ptr, ptr %868, align 8, !tbaa !58
  %870 = getelementptr inbounds nuw i8, ptr %785, i64 2160
  %871 = load ptr, ptr %870, align 16, !tbaa !59
  %872 = load i64, ptr %132, align 16, !tbaa !21
  %873 = icmp sgt i64 %872, 0
  br i1 %873, label %874, label %876

874:                                              ; preds = %822
  %875 = getelementptr inbounds nuw i8, ptr %785, i64 2128
  br label %889

876:                                              ; preds = %924, %822
  %877 = fmul <2 x double> %839, %850
  %878 = fmul <2 x double> %839, %851
  %879 = getelementptr inbounds nuw i8, ptr %785, i64 2312
  %880 = load ptr, ptr %879, align 8, !tbaa !50
  %881 = getelementptr inbounds nuw i8, ptr %785, i64 2320
  %882 = load ptr, ptr %881, align 16, !tbaa !60
  %883 = load i64, ptr %133, align 8, !tbaa !22
  %884 = icmp sgt i64 %883, 0
  br i1 %884, label %885, label %958

885:                                              ; preds = %876
  %886 = getelementptr inbounds nuw i8, ptr %785, i64 2264
  %887 = getelementptr inbounds nuw i8, ptr %785, i64 2272
  %888 = getelementptr inbounds nuw i8, ptr %785, i64 2280
  br label %931

889:                                              ; preds = %874, %924
  %890 = phi i64 [ 0, %874 ], [ %928, %924 ]
  %891 = getelementptr inbounds nuw <2 x double>, ptr %859, i64 %890
  %892 = load <2 x double>, ptr %891, align 16, !tbaa !26
  %893 = getelementptr inbounds nuw <2 x double>, ptr %861, i64 %890
  %894 = load <2 x double>, ptr %893, align 16, !tbaa !26
  %895 = fsub <2 x double> %892, %894
  %896 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %818, <2 x double> %895, <2 x double> %892)
  br i1 %867, label %901, label %897

897:                                              ; preds = %889
  %898 = getelementptr inbounds nuw <2 x double>, ptr %869, i64 %890
  %899 = load <2 x double>, ptr %898, align 16, !tbaa !26
  %900 = select <2 x i1> %699, <2 x double> %899, <2 x double> %896
  br label %901

901:                                              ; preds = %897, %889
  %902 = phi <2 x double> [ %900, %897 ], [ %896, %889 ]
  %903 = getelementptr inbounds nuw <2 x double>, ptr %869, i64 %890
  store <2 x double> %902, ptr %903, align 16, !tbaa !26
  %904 = load i64, ptr %875, align 16, !tbaa !31
  %905 = icmp slt i64 %890, %904
  %906 = getelementptr inbounds nuw <2 x double>, ptr %863, i64 %890
  %907 = load <2 x double>, ptr %906, align 16, !tbaa !26
  br i1 %905, label %908, label %911

908:                                              ; preds = %901
  %909 = fmul <2 x double> %857, %894
  %910 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %855, <2 x double> %892, <2 x double> %909)
  br label %924

911:                                              ; preds = %901
  %912 = fmul <2 x double> %835, %892
  %913 = fmul <2 x double> %912, splat (double 0x3FD5555555555555)
  %914 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %833, <2 x double> splat (double 5.000000e-01), <2 x double> %913)
  %915 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %892, <2 x double> %914, <2 x double> %831)
  %916 = fmul <2 x double> %892, %915
  %917 = fmul <2 x double> %835, %894
  %918 = fmul <2 x double> %917, splat (double 0x3FD5555555555555)
  %919 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %833, <2 x double> splat (double 5.000000e-01), <2 x double> %918)
  %920 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %894, <2 x double> %919, <2 x double> %831)
  %921 = fmul <2 x double> %894, %920
  %922 = fmul <2 x double> %853, %921
  %923 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %852, <2 x double> %916, <2 x double> %922)
  br label %924

924:                                              ; preds = %911, %908
  %925 = phi <2 x double> [ %923, %911 ], [ %910, %908 ]
  %926 = fmul <2 x double> %925, %907
  %927 = getelementptr inbounds nuw <2 x double>, ptr %871, i64 %890
  store <2 x double> %926, ptr %927, align 16, !tbaa !26
  %928 = add nuw nsw i64 %890, 1
  %929 = load i64, ptr %132, align 16, !tbaa !21
  %930 = icmp slt i64 %928, %929
  br i1 %930, label %889, label %876, !llvm.loop !61

931:                                              ; preds = %885, %931
  %932 = phi i64 [ 0, %885 ], [ %933, %931 ]
  %933 = add nuw nsw i64 %932, 1
  %934 = getelementptr inbounds nuw <2 x double>, ptr %880, i64 %933
  %935 = load <2 x double>, ptr %934, align 16, !tbaa !26
  %936 = getelementptr inbounds nuw <2 x double>, ptr %880, i64 %932
  %937 = load <2 x double>, ptr %936, align 16, !tbaa !26
  %938 = fsub <2 x double> %935, %937
  %939 = load ptr, ptr %886, align 8, !tbaa !51
  %940 = getelementptr inbounds nuw <2 x double>, ptr %939, i64 %932
  %941 = load <2 x double>, ptr %940, align 16, !tbaa !26
  %942 = fmul <2 x double> %938, %941
  %943 = getelementptr inbounds nuw <2 x double>, ptr %882, i64 %933
  %944 = load <2 x double>, ptr %943, align 16, !tbaa !26
  %945 = getelementptr inbounds nuw <2 x double>, ptr %882, i64 %932
  %946 = load <2 x double>, ptr %945, align 16, !tbaa !26
  %947 = fsub <2 x double> %944, %946
  %948 = load ptr, ptr %887, align 16, !tbaa !62
  %949 = getelementptr inbounds nuw <2 x double>, ptr %948, i64 %932
  %950 = load <2 x double>, ptr %949, align 16, !tbaa !26
  %951 = fmul <2 x double> %947, %950
  %952 = fmul <2 x double> %878, %951
  %953 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %877, <2 x double> %942, <2 x double> %952)
  %954 = load ptr, ptr %888, align 8, !tbaa !63
  %955 = getelementptr inbounds nuw <2 x double>, ptr %954, i64 %932
  store <2 x double> %953, ptr %955, align 16, !tbaa !26
  %956 = load i64, ptr %133, align 8, !tbaa !22
  %957 = icmp slt i64 %933, %956
  br i1 %957, label %931, label %958, !llvm.loop !64

958:                                              ; preds = %931, %876
  %959 = getelementptr inbounds nuw i8, ptr %785, i64 416
  %960 = load <2 x double>, ptr %959, align 16, !tbaa !26
  %961 = fcmp ogt <2 x double> %960, zeroinitializer
  %962 = bitcast <2 x i1> %961 to i2
  %963 = icmp eq i2 %962, 0
  br i1 %963, label %964, label %969

964:                                              ; preds = %958
  %965 = getelementptr inbounds nuw i8, ptr %785, i64 1888
  %966 = load <2 x double>, ptr %965, align 16, !tbaa !26
  %967 = select <2 x i1> %699, <2 x double> %966, <2 x double> zeroinitializer
  store <2 x double> %967, ptr %965, align 16, !tbaa !26
  %968 = load <2 x double>, ptr %840, align 16, !tbaa !26, !noalias !65
  br label %1078

969:                                              ; preds = %958
  %970 = load <2 x double>, ptr %841, align 16, !tbaa !26
  %971 = getelementptr inbounds nuw i8, ptr %785, i64 432
  %972 = load <2 x double>, ptr %971, align 16, !tbaa !26
  %973 = getelementptr inbounds nuw i8, ptr %785, i64 464
  %974 = load <2 x double>, ptr %973, align 16, !tbaa !26
  %975 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %976 = fneg <2 x double> %975
  %977 = fdiv <2 x double> %976, %972
  %978 = fcmp ogt <2 x double> %977, splat (double -7.000000e+02)
  %979 = select <2 x i1> %978, <2 x double> %977, <2 x double> splat (double -7.000000e+02)
  %980 = fcmp olt <2 x double> %979, splat (double 7.000000e+02)
  %981 = select <2 x i1> %980, <2 x double> %979, <2 x double> splat (double 7.000000e+02)
  %982 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %981, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %983 = fadd <2 x double> %982, splat (double 0xC338000000000000)
  %984 = fneg <2 x double> %983
  %985 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %984, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %981)
  %986 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %984, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %985)
  %987 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %986, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %988 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %987, <2 x double> %986, <2 x double> splat (double 0x3E5AE64567F544E4))
  %989 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %988, <2 x double> %986, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %990 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %989, <2 x double> %986, <2 x double> splat (double 0x3EC71DE3A556C734))
  %991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %990, <2 x double> %986, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %992 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %991, <2 x double> %986, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %993 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %992, <2 x double> %986, <2 x double> splat (double 0x3F56C16C16C16C17))
  %994 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %993, <2 x double> %986, <2 x double> splat (double 0x3F81111111111111))
  %995 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %994, <2 x double> %986, <2 x double> splat (double 0x3FA5555555555555))
  %996 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %995, <2 x double> %986, <2 x double> splat (double 0x3FC5555555555555))
  %997 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %996, <2 x double> %986, <2 x double> splat (double 5.000000e-01))
  %998 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %997, <2 x double> %986, <2 x double> splat (double 1.000000e+00))
  %999 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %998, <2 x double> %986, <2 x double> splat (double 1.000000e+00))
  %1000 = bitcast <2 x double> %982 to <2 x i64>
  %1001 = shl <2 x i64> %1000, splat (i64 52)
  %1002 = bitcast <2 x double> %999 to <2 x i64>
  %1003 = add <2 x i64> %1001, %1002
  %1004 = bitcast <2 x i64> %1003 to <2 x double>
  %1005 = fsub <2 x double> splat (double 1.000000e+00), %1004
  %1006 = load <2 x double>, ptr %844, align 16, !tbaa !26
  %1007 = fsub <2 x double> %1006, %970
  %1008 = load ptr, ptr %868, align 8, !tbaa !58
  %1009 = load ptr, ptr %858, align 16, !tbaa !47
  %1010 = getelementptr inbounds nuw i8, ptr %785, i64 2176
  %1011 = load ptr, ptr %1010, align 16, !tbaa !48
  %1012 = load ptr, ptr %862, align 8, !tbaa !49
  %1013 = getelementptr inbounds nuw i8, ptr %785, i64 2168
  %1014 = load ptr, ptr %1013, align 8, !tbaa !68
  %1015 = getelementptr inbounds nuw i8, ptr %785, i64 2128
  %1016 = load i64, ptr %1015, align 16, !tbaa !31
  %1017 = load i64, ptr %132, align 16, !tbaa !21
  %1018 = icmp slt i64 %1016, %1017
  br i1 %1018, label %1019, label %1023

1019:                                             ; preds = %969
  %1020 = getelementptr inbounds nuw i8, ptr %785, i64 448
  %1021 = load <2 x double>, ptr %1020, align 16, !tbaa !26
  %1022 = fneg <2 x double> %1021
  br label %1035

1023:                                             ; preds = %1035, %969
  %1024 = phi <2 x double> [ zeroinitializer, %969 ], [ %1066, %1035 ]
  %1025 = phi <2 x double> [ zeroinitializer, %969 ], [ %1074, %1035 ]
  %1026 = getelementptr inbounds nuw i8, ptr %785, i64 976
  %1027 = load <2 x double>, ptr %1026, align 16, !tbaa !26
  %1028 = fsub <2 x double> %1027, %1006
  %1029 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1024, <2 x double> %1028, <2 x double> %1025)
  %1030 = getelementptr inbounds nuw i8, ptr %785, i64 1888
  %1031 = load <2 x double>, ptr %840, align 16, !tbaa !26
  %1032 = fmul <2 x double> %1031, %1029
  %1033 = load <2 x double>, ptr %1030, align 16, !tbaa !26
  %1034 = select <2 x i1> %699, <2 x double> %1033, <2 x double> %1032
  store <2 x double> %1034, ptr %1030, align 16, !tbaa !26
  br label %1078

1035:                                             ; preds = %1019, %1035
  %1036 = phi <2 x double> [ zeroinitializer, %1019 ], [ %1074, %1035 ]
  %1037 = phi i64 [ %1016, %1019 ], [ %1075, %1035 ]
  %1038 = getelementptr inbounds <2 x double>, ptr %1009, i64 %1037
  %1039 = load <2 x double>, ptr %1038, align 16, !tbaa !26
  %1040 = getelementptr inbounds <2 x double>, ptr %1008, i64 %1037
  %1041 = load <2 x double>, ptr %1040, align 16, !tbaa !26
  %1042 = fadd <2 x double> %1039, %1041
  %1043 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1042, <2 x double> splat (double 5.000000e-01), <2 x double> %1022)
  %1044 = fmul <2 x double> %974, %1043
  %1045 = fcmp ogt <2 x double> %1044, splat (double -5.000000e+00)
  %1046 = select <2 x i1> %1045, <2 x double> %1044, <2 x double> splat (double -5.000000e+00)
  %1047 = fcmp olt <2 x double> %1046, splat (double 5.000000e+00)
  %1048 = select <2 x i1> %1047, <2 x double> %1046, <2 x double> splat (double 5.000000e+00)
  %1049 = fmul <2 x double> %1048, %1048
  %1050 = fadd <2 x double> %1049, splat (double 3.780000e+02)
  %1051 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1049, <2 x double> %1050, <2 x double> splat (double 1.732500e+04))
  %1052 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1049, <2 x double> %1051, <2 x double> splat (double 1.351350e+05))
  %1053 = fmul <2 x double> %1048, %1052
  %1054 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1049, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1055 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1049, <2 x double> %1054, <2 x double> splat (double 6.237000e+04))
  %1056 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1049, <2 x double> %1055, <2 x double> splat (double 1.351350e+05))
  %1057 = fdiv <2 x double> %1053, %1056
  %1058 = fadd <2 x double> %1057, splat (double 1.000000e+00)
  %1059 = fmul <2 x double> %960, %1058
  %1060 = getelementptr inbounds <2 x double>, ptr %1011, i64 %1037
  %1061 = load <2 x double>, ptr %1060, align 16, !tbaa !26
  %1062 = fadd <2 x double> %1061, splat (double -1.000000e+00)
  %1063 = fadd <2 x double> %1062, %1059
  %1064 = fcmp ogt <2 x double> %1063, zeroinitializer
  %1065 = select <2 x i1> %1064, <2 x double> %1063, <2 x double> zeroinitializer
  %1066 = fmul <2 x double> %1005, %1065
  %1067 = fsub <2 x double> %1061, %1066
  %1068 = getelementptr inbounds <2 x double>, ptr %1014, i64 %1037
  %1069 = load <2 x double>, ptr %1068, align 16, !tbaa !26
  %1070 = select <2 x i1> %699, <2 x double> %1069, <2 x double> %1067
  store <2 x double> %1070, ptr %1068, align 16, !tbaa !26
  %1071 = getelementptr inbounds <2 x double>, ptr %1012, i64 %1037
  %1072 = load <2 x double>, ptr %1071, align 16, !tbaa !26
  %1073 = fmul <2 x double> %1007, %1072
  %1074 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1066, <2 x double> %1073, <2 x double> %1036)
  %1075 = add nsw i64 %1037, 1
  %1076 = load i64, ptr %132, align 16, !tbaa !21
  %1077 = icmp slt i64 %1075, %1076
  br i1 %1077, label %1035, label %1023, !llvm.loop !69

1078:                                             ; preds = %964, %1023
  %1079 = phi <2 x double> [ %967, %964 ], [ %1034, %1023 ]
  %1080 = phi <2 x double> [ %968, %964 ], [ %1031, %1023 ]
  %1081 = load <2 x double>, ptr %819, align 16, !tbaa !26
  %1082 = load <2 x double>, ptr %820, align 16, !tbaa !26
  %1083 = fcmp olt <2 x double> %1081, %1082
  %1084 = select <2 x i1> %1083, <2 x double> %1081, <2 x double> %1082
  %1085 = load <2 x double>, ptr %785, align 16, !tbaa !26
  %1086 = fmul <2 x double> %1085, splat (double 3.000000e-01)
  %1087 = fcmp ogt <2 x double> %1084, %1086
  %1088 = select <2 x i1> %1087, <2 x double> %1084, <2 x double> %1086
  %1089 = select <2 x i1> %699, <2 x double> %1081, <2 x double> %1088
  store <2 x double> %1089, ptr %819, align 16, !tbaa !26
  %1090 = getelementptr inbounds nuw i8, ptr %785, i64 768
  %1091 = load <2 x double>, ptr %1090, align 16, !tbaa !26, !noalias !65
  %1092 = getelementptr inbounds nuw i8, ptr %785, i64 1936
  %1093 = load <2 x double>, ptr %1092, align 16, !tbaa !26, !noalias !65
  %1094 = fmul <2 x double> %1091, %1093
  %1095 = fcmp ogt <2 x double> %1094, zeroinitializer
  %1096 = select <2 x i1> %1095, <2 x double> %1094, <2 x double> zeroinitializer
  %1097 = fcmp uge <2 x double> %1096, splat (double 1.000000e+00)
  %1098 = select <2 x i1> %1097, <2 x double> splat (double 1.000000e+00), <2 x double> %1096
  %1099 = getelementptr inbounds nuw i8, ptr %785, i64 2112
  %1100 = load <2 x i64>, ptr %1099, align 16, !tbaa !26, !noalias !65
  %1101 = load <2 x double>, ptr %180, align 16, !tbaa !26, !noalias !65
  %1102 = getelementptr inbounds nuw i8, ptr %785, i64 800
  %1103 = load <2 x double>, ptr %1102, align 16, !tbaa !26, !noalias !65
  %1104 = icmp eq <2 x i64> %1100, zeroinitializer
  %1105 = select <2 x i1> %1104, <2 x double> %1103, <2 x double> %1101
  %1106 = getelementptr inbounds nuw i8, ptr %785, i64 896
  %1107 = load <2 x double>, ptr %1106, align 16, !tbaa !26, !noalias !65
  %1108 = fsub <2 x double> splat (double 1.000000e+00), %1098
  %1109 = getelementptr inbounds nuw i8, ptr %785, i64 496
  %1110 = load <2 x double>, ptr %1109, align 16, !tbaa !26, !noalias !65
  %1111 = getelementptr inbounds nuw i8, ptr %785, i64 2080
  %1112 = load <2 x i64>, ptr %1111, align 16, !tbaa !26, !noalias !65
  %1113 = fsub <2 x double> %1085, %1089
  %1114 = getelementptr inbounds nuw i8, ptr %785, i64 1952
  %1115 = load <2 x double>, ptr %1114, align 16, !tbaa !26, !noalias !65
  %1116 = fmul <2 x double> %1113, %1115
  %1117 = icmp eq <2 x i64> %1112, zeroinitializer
  %1118 = select <2 x i1> %1117, <2 x double> zeroinitializer, <2 x double> %1116
  %1119 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1108, <2 x double> %1110, <2 x double> %1118)
  %1120 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1107, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1121 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1107, <2 x double> %1120, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1122 = fdiv <2 x double> splat (double 1.000000e+00), %1121
  %1123 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1105, <2 x double> %1119, <2 x double> splat (double 1.000000e+00))
  %1124 = fdiv <2 x double> splat (double 1.000000e+00), %1123
  %1125 = load <2 x double>, ptr %181, align 16, !tbaa !26, !noalias !65
  %1126 = load <2 x double>, ptr %178, align 16, !tbaa !26, !noalias !65
  %1127 = select <2 x i1> %1104, <2 x double> %1126, <2 x double> %1125
  %1128 = fsub <2 x double> %1127, %1107
  %1129 = fmul <2 x double> %1128, %1124
  %1130 = fmul <2 x double> %1105, %1129
  %1131 = load <2 x double>, ptr %806, align 16, !tbaa !26, !noalias !65
  %1132 = getelementptr inbounds nuw i8, ptr %785, i64 816
  %1133 = load <2 x double>, ptr %1132, align 16, !tbaa !26, !noalias !65
  %1134 = load <2 x double>, ptr %809, align 16, !tbaa !26, !noalias !65
  %1135 = getelementptr inbounds nuw i8, ptr %785, i64 1040
  %1136 = load <2 x double>, ptr %1135, align 16, !tbaa !26, !noalias !65
  %1137 = fmul <2 x double> %1134, %1136
  %1138 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1131, <2 x double> %1133, <2 x double> %1137)
  %1139 = load <2 x double>, ptr %812, align 16, !tbaa !26, !noalias !65
  %1140 = getelementptr inbounds nuw i8, ptr %785, i64 1264
  %1141 = load <2 x double>, ptr %1140, align 16, !tbaa !26, !noalias !65
  %1142 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1139, <2 x double> %1141, <2 x double> %1138)
  %1143 = fdiv <2 x double> %1115, %1080
  %1144 = fcmp ule <2 x double> %1098, zeroinitializer
  %1145 = or <2 x i1> %1097, %1144
  %1146 = fmul <2 x double> %1093, %1110
  %1147 = select <2 x i1> %1145, <2 x double> zeroinitializer, <2 x double> %1146
  %1148 = select <2 x i1> %1117, <2 x double> %1147, <2 x double> %1143
  %1149 = fmul <2 x double> %1105, %1130
  %1150 = fmul <2 x double> %1124, %1149
  %1151 = fmul <2 x double> %1122, %1150
  %1152 = fmul <2 x double> %1151, %1148
  %1153 = fdiv <2 x double> %1152, %1131
  %1154 = fadd <2 x double> %1153, splat (double 1.000000e+00)
  %1155 = fdiv <2 x double> splat (double 1.000000e+00), %1154
  %1156 = getelementptr inbounds nuw i8, ptr %785, i64 864
  %1157 = load <2 x double>, ptr %1156, align 16, !tbaa !26, !noalias !65
  %1158 = fsub <2 x double> %1130, %1157
  %1159 = load <2 x double>, ptr %823, align 16, !tbaa !26, !noalias !65
  %1160 = fsub <2 x double> %1142, %1159
  %1161 = fmul <2 x double> %1160, %1153
  %1162 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1158, <2 x double> %1122, <2 x double> %1161)
  %1163 = fmul <2 x double> %1162, %1155
  %1164 = getelementptr inbounds nuw i8, ptr %785, i64 1504
  %1165 = load <2 x double>, ptr %1164, align 16, !tbaa !26, !noalias !65
  %1166 = fcmp ule <2 x double> %1165, zeroinitializer
  %1167 = fcmp ule <2 x double> %1163, zeroinitializer
  %1168 = or <2 x i1> %1166, %1167
  %1169 = select <2 x i1> %1168, <2 x double> zeroinitializer, <2 x double> %1163
  %1170 = getelementptr inbounds nuw i8, ptr %785, i64 544
  %1171 = load <2 x double>, ptr %1170, align 16, !tbaa !26, !noalias !65
  %1172 = fcmp ogt <2 x double> %1171, zeroinitializer
  %1173 = getelementptr inbounds nuw i8, ptr %785, i64 256
  %1174 = load <2 x double>, ptr %1173, align 16, !tbaa !26, !noalias !65
  %1175 = bitcast <2 x i1> %1172 to i2
  %1176 = icmp eq i2 %1175, 0
  br i1 %1176, label %1189, label %1177

1177:                                             ; preds = %1078
  %1178 = getelementptr inbounds nuw i8, ptr %785, i64 912
  %1179 = load <2 x double>, ptr %1178, align 16, !tbaa !26, !noalias !65
  %1180 = fadd <2 x double> %1129, %1179
  %1181 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1180)
  %1182 = fcmp ogt <2 x double> %1171, splat (double 1.000000e-09)
  %1183 = select <2 x i1> %1182, <2 x double> %1171, <2 x double> splat (double 1.000000e-09)
  %1184 = fdiv <2 x double> %1181, %1183
  %1185 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1184)
  %1186 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1185)
  %1187 = select <2 x i1> %1172, <2 x double> %1186, <2 x double> splat (double 1.000000e+00)
  %1188 = fmul <2 x double> %1174, %1187
  br label %1189

1189:                                             ; preds = %1078, %1177
  %1190 = phi <2 x double> [ %1188, %1177 ], [ %1174, %1078 ]
  %1191 = getelementptr inbounds nuw i8, ptr %785, i64 1024
  %1192 = load <2 x double>, ptr %1191, align 16, !tbaa !26, !noalias !65
  %1193 = getelementptr inbounds nuw i8, ptr %785, i64 1248
  %1194 = load <2 x double>, ptr %1193, align 16, !tbaa !26, !noalias !65
  %1195 = fmul <2 x double> %1139, %1194
  %1196 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1134, <2 x double> %1192, <2 x double> %1195)
  %1197 = getelementptr inbounds nuw i8, ptr %785, i64 304
  %1198 = load <2 x double>, ptr %1197, align 16, !tbaa !26, !noalias !65
  %1199 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1198, <2 x double> %1131, <2 x double> splat (double 1.000000e+00))
  %1200 = fdiv <2 x double> splat (double 1.000000e+00), %1199
  %1201 = fmul <2 x double> %1124, %1129
  %1202 = fmul <2 x double> %1122, %1201
  %1203 = fmul <2 x double> %1202, %1155
  %1204 = select <2 x i1> %1168, <2 x double> zeroinitializer, <2 x double> %1203
  %1205 = getelementptr inbounds nuw i8, ptr %785, i64 272
  %1206 = load <2 x double>, ptr %1205, align 16, !tbaa !26, !noalias !65
  %1207 = fmul <2 x double> %1190, splat (double 2.500000e-01)
  %1208 = fmul <2 x double> %1119, %1207
  %1209 = fneg <2 x double> %1124
  %1210 = fmul <2 x double> %1208, %1209
  %1211 = select <2 x i1> %1172, <2 x double> %1210, <2 x double> splat (double -0.000000e+00)
  %1212 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1206, <2 x double> %1204, <2 x double> %1211)
  %1213 = fadd <2 x double> %1159, %1169
  %1214 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1206, <2 x double> %1213, <2 x double> %1190)
  %1215 = fneg <2 x double> %1198
  %1216 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1196, <2 x double> %1214)
  %1217 = fneg <2 x double> %1105
  %1218 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1200, <2 x double> %1216, <2 x double> %1217)
  %1219 = fmul <2 x double> %1200, %1212
  %1220 = fcmp olt <2 x double> %1219, splat (double 8.000000e-01)
  %1221 = select <2 x i1> %1220, <2 x double> %1219, <2 x double> splat (double 8.000000e-01)
  %1222 = fsub <2 x double> splat (double 1.000000e+00), %1221
  %1223 = fdiv <2 x double> %1218, %1222
  %1224 = fadd <2 x double> %1105, %1223
  %1225 = getelementptr inbounds nuw i8, ptr %785, i64 288
  %1226 = load <2 x double>, ptr %1225, align 16, !tbaa !26, !noalias !65
  %1227 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1196, <2 x double> %1226)
  %1228 = fmul <2 x double> %1200, %1227
  %1229 = fcmp olt <2 x double> %1224, %1228
  %1230 = select <2 x i1> %1229, <2 x double> %1224, <2 x double> %1228
  %1231 = select <2 x i1> %1104, <2 x double> %1230, <2 x double> %1101
  %1232 = fsub <2 x double> %1231, %1105
  %1233 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1204, <2 x double> %1232, <2 x double> %1169)
  %1234 = fcmp ogt <2 x double> %1233, zeroinitializer
  %1235 = select <2 x i1> %1234, <2 x double> %1233, <2 x double> zeroinitializer
  %1236 = select <2 x i1> %699, <2 x double> %1103, <2 x double> %1231
  store <2 x double> %1236, ptr %1102, align 16, !tbaa !26
  %1237 = select <2 x i1> %699, <2 x double> %1165, <2 x double> %1235
  store <2 x double> %1237, ptr %1164, align 16, !tbaa !26
  %1238 = fadd <2 x double> %1159, %1237
  %1239 = fneg <2 x double> %1134
  %1240 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1239, <2 x double> %1136, <2 x double> %1238)
  %1241 = fneg <2 x double> %1139
  %1242 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1241, <2 x double> %1141, <2 x double> %1240)
  %1243 = fdiv <2 x double> %1242, %1131
  %1244 = load <2 x double>, ptr %843, align 16, !tbaa !26, !noalias !70
  %1245 = fsub <2 x double> %1244, %1243
  %1246 = getelementptr inbounds nuw i8, ptr %785, i64 1008
  %1247 = load <2 x double>, ptr %1246, align 16, !tbaa !26, !noalias !70
  %1248 = fsub <2 x double> %1247, %1079
  %1249 = getelementptr inbounds nuw i8, ptr %785, i64 976
  %1250 = load <2 x double>, ptr %1249, align 16, !tbaa !26, !noalias !70
  %1251 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1112)
  %1252 = icmp eq i64 %1251, 0
  br i1 %1252, label %1412, label %1253

1253:                                             ; preds = %1189
  %1254 = fcmp ogt <2 x double> %1248, %1245
  %1255 = getelementptr inbounds nuw i8, ptr %785, i64 1920
  %1256 = load <2 x double>, ptr %1255, align 16, !tbaa !26, !noalias !70
  %1257 = fcmp oeq <2 x double> %1256, zeroinitializer
  %1258 = select <2 x i1> %1257, <2 x i1> %1254, <2 x i1> zeroinitializer
  %1259 = select <2 x i1> %1258, <2 x i64> %1112, <2 x i64> zeroinitializer
  %1260 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1259)
  %1261 = icmp eq i64 %1260, 0
  br i1 %1261, label %1330, label %1262

1262:                                             ; preds = %1253
  %1263 = fsub <2 x double> %1248, %1245
  %1264 = fdiv <2 x double> %1263, %1080
  %1265 = getelementptr inbounds nuw i8, ptr %785, i64 2168
  %1266 = load ptr, ptr %1265, align 8, !tbaa !68, !noalias !70
  %1267 = load i64, ptr %132, align 16, !tbaa !21, !noalias !70
  %1268 = add nsw i64 %1267, -1
  %1269 = getelementptr inbounds <2 x double>, ptr %1266, i64 %1268
  %1270 = load <2 x double>, ptr %1269, align 16, !tbaa !26, !noalias !70
  %1271 = icmp sgt i64 %1267, 1
  br i1 %1271, label %1272, label %1322

1272:                                             ; preds = %1262
  %1273 = getelementptr inbounds nuw i8, ptr %785, i64 2128
  %1274 = load i64, ptr %1273, align 16, !tbaa !31, !noalias !70
  %1275 = getelementptr inbounds nuw i8, ptr %785, i64 2224
  br label %1276

1276:                                             ; preds = %1272, %1319
  %1277 = phi <2 x double> [ %1250, %1272 ], [ %1314, %1319 ]
  %1278 = phi i64 [ %1268, %1272 ], [ %1320, %1319 ]
  %1279 = phi <2 x double> [ %1270, %1272 ], [ %1302, %1319 ]
  %1280 = phi <2 x i64> [ %1259, %1272 ], [ %1306, %1319 ]
  %1281 = phi <2 x double> [ %1264, %1272 ], [ %1313, %1319 ]
  %1282 = icmp slt i64 %1278, %1274
  br i1 %1282, label %1283, label %1289

1283:                                             ; preds = %1276
  %1284 = load ptr, ptr %1275, align 16, !tbaa !73, !noalias !70
  %1285 = getelementptr inbounds nuw <2 x double>, ptr %1284, i64 %1278
  %1286 = load <2 x double>, ptr %1285, align 16, !tbaa !26, !noalias !70
  %1287 = load <2 x double>, ptr %841, align 16, !tbaa !26, !noalias !70
  %1288 = fmul <2 x double> %1286, %1287
  br label %1297

1289:                                             ; preds = %1276
  %1290 = load <2 x double>, ptr %844, align 16, !tbaa !26, !noalias !70
  %1291 = load <2 x double>, ptr %841, align 16, !tbaa !26, !noalias !70
  %1292 = load ptr, ptr %1275, align 16, !tbaa !73, !noalias !70
  %1293 = getelementptr inbounds nuw <2 x double>, ptr %1292, i64 %1278
  %1294 = load <2 x double>, ptr %1293, align 16, !tbaa !26, !noalias !70
  %1295 = fsub <2 x double> %1290, %1291
  %1296 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1294, <2 x double> %1295, <2 x double> %1291)
  br label %1297

1297:                                             ; preds = %1283, %1289
  %1298 = phi <2 x double> [ %1288, %1283 ], [ %1296, %1289 ]
  %1299 = getelementptr inbounds nuw <2 x double>, ptr %1266, i64 %1278
  %1300 = load <2 x double>, ptr %1299, align 16, !tbaa !26, !noalias !70
  %1301 = icmp eq <2 x i64> %1280, zeroinitializer
  %1302 = select <2 x i1> %1301, <2 x double> %1279, <2 x double> %1300
  %1303 = fsub <2 x double> %1277, %1298
  %1304 = fmul <2 x double> %1303, %1302
  %1305 = fcmp olt <2 x double> %1304, %1281
  %1306 = select <2 x i1> %1305, <2 x i64> %1280, <2 x i64> zeroinitializer
  %1307 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1306)
  %1308 = icmp eq i64 %1307, 0
  br i1 %1308, label %1322, label %1309

1309:                                             ; preds = %1297
  %1310 = fneg <2 x double> %1302
  %1311 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1310, <2 x double> %1303, <2 x double> %1281)
  %1312 = icmp eq <2 x i64> %1306, zeroinitializer
  %1313 = select <2 x i1> %1312, <2 x double> %1281, <2 x double> %1311
  %1314 = select <2 x i1> %1312, <2 x double> %1277, <2 x double> %1298
  %1315 = icmp eq i64 %1278, 1
  br i1 %1315, label %1316, label %1319

1316:                                             ; preds = %1309
  %1317 = load <2 x double>, ptr %1266, align 16, !tbaa !26, !noalias !70
  %1318 = select <2 x i1> %1312, <2 x double> %1302, <2 x double> %1317
  br label %1322

1319:                                             ; preds = %1309
  %1320 = add nsw i64 %1278, -1
  %1321 = icmp sgt i64 %1278, 1
  br i1 %1321, label %1276, label %1322, !llvm.loop !74

1322:                                             ; preds = %1319, %1297, %1316, %1262
  %1323 = phi <2 x double> [ %1264, %1262 ], [ %1313, %1316 ], [ %1281, %1297 ], [ %1313, %1319 ]
  %1324 = phi <2 x double> [ %1250, %1262 ], [ %1314, %1316 ], [ %1277, %1297 ], [ %1314, %1319 ]
  %1325 = phi <2 x double> [ %1270, %1262 ], [ %1318, %1316 ], [ %1302, %1297 ], [ %1302, %1319 ]
  %1326 = fdiv <2 x double> %1323, %1325
  %1327 = fsub <2 x double> %1324, %1326
  %1328 = icmp eq <2 x i64> %1259, zeroinitializer
  %1329 = select <2 x i1> %1328, <2 x double> %1250, <2 x double> %1327
  br label %1330

1330:                                             ; preds = %1322, %1253
  %1331 = phi <2 x double> [ %1329, %1322 ], [ %1250, %1253 ]
  %1332 = getelementptr inbounds nuw i8, ptr %785, i64 640
  %1333 = load <2 x double>, ptr %1332, align 16, !tbaa !26, !noalias !70
  %1334 = getelementptr inbounds nuw i8, ptr %785, i64 656
  %1335 = load <2 x double>, ptr %1334, align 16, !tbaa !26, !noalias !70
  %1336 = getelementptr inbounds nuw i8, ptr %785, i64 672
  %1337 = load <2 x double>, ptr %1336, align 16, !tbaa !26, !noalias !70
  %1338 = getelementptr inbounds nuw i8, ptr %785, i64 688
  %1339 = load <2 x double>, ptr %1338, align 16, !tbaa !26, !noalias !70
  %1340 = fmul <2 x double> %1085, splat (double 2.000000e-05)
  %1341 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1089, <2 x double> %1339, <2 x double> %1337)
  %1342 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1089, <2 x double> %1341, <2 x double> %1335)
  %1343 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1089, <2 x double> %1342, <2 x double> %1333)
  %1344 = fsub <2 x double> %1343, %1331
  %1345 = fmul <2 x double> %1089, splat (double 3.000000e+00)
  %1346 = fmul <2 x double> %1345, %1339
  %1347 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1337, <2 x double> splat (double 2.000000e+00), <2 x double> %1346)
  %1348 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1089, <2 x double> %1347, <2 x double> %1335)
  %1349 = fdiv <2 x double> %1344, %1348
  %1350 = fsub <2 x double> %1089, %1349
  %1351 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1349)
  %1352 = fcmp oge <2 x double> %1351, %1340
  %1353 = bitcast <2 x i1> %1352 to i2
  %1354 = icmp eq i2 %1353, 0
  br i1 %1354, label %1401, label %1355, !llvm.loop !75

1355:                                             ; preds = %1330
  %1356 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1350, <2 x double> %1339, <2 x double> %1337)
  %1357 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1350, <2 x double> %1356, <2 x double> %1335)
  %1358 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1350, <2 x double> %1357, <2 x double> %1333)
  %1359 = fsub <2 x double> %1358, %1331
  %1360 = fmul <2 x double> %1350, splat (double 3.000000e+00)
  %1361 = fmul <2 x double> %1360, %1339
  %1362 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1337, <2 x double> splat (double 2.000000e+00), <2 x double> %1361)
  %1363 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1350, <2 x double> %1362, <2 x double> %1335)
  %1364 = fdiv <2 x double> %1359, %1363
  %1365 = fsub <2 x double> %1350, %1364
  %1366 = select <2 x i1> %1352, <2 x double> %1365, <2 x double> %1350
  %1367 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1364)
  %1368 = fcmp oge <2 x double> %1367, %1340
  %1369 = and <2 x i1> %1368, %1352
  %1370 = bitcast <2 x i1> %1369 to i2
  %1371 = icmp eq i2 %1370, 0
  br i1 %1371, label %1401, label %1372, !llvm.loop !75

1372:                                             ; preds = %1355
  %1373 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1366, <2 x double> %1339, <2 x double> %1337)
  %1374 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1366, <2 x double> %1373, <2 x double> %1335)
  %1375 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1366, <2 x double> %1374, <2 x double> %1333)
  %1376 = fsub <2 x double> %1375, %1331
  %1377 = fmul <2 x double> %1366, splat (double 3.000000e+00)
  %1378 = fmul <2 x double> %1377, %1339
  %1379 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1337, <2 x double> splat (double 2.000000e+00), <2 x double> %1378)
  %1380 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1366, <2 x double> %1379, <2 x double> %1335)
  %1381 = fdiv <2 x double> %1376, %1380
  %1382 = fsub <2 x double> %1366, %1381
  %1383 = select <2 x i1> %1369, <2 x double> %1382, <2 x double> %1366
  %1384 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1381)
  %1385 = fcmp oge <2 x double> %1384, %1340
  %1386 = and <2 x i1> %1385, %1369
  %1387 = bitcast <2 x i1> %1386 to i2
  %1388 = icmp eq i2 %1387, 0
  br i1 %1388, label %1401, label %1389, !llvm.loop !75

1389:                                             ; preds = %1372
  %1390 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1383, <2 x double> %1339, <2 x double> %1337)
  %1391 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1383, <2 x double> %1390, <2 x double> %1335)
  %1392 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1383, <2 x double> %1391, <2 x double> %1333)
  %1393 = fsub <2 x double> %1392, %1331
  %1394 = fmul <2 x double> %1383, splat (double 3.000000e+00)
  %1395 = fmul <2 x double> %1394, %1339
  %1396 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1337, <2 x double> splat (double 2.000000e+00), <2 x double> %1395)
  %1397 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1383, <2 x double> %1396, <2 x double> %1335)
  %1398 = fdiv <2 x double> %1393, %1397
  %1399 = fsub <2 x double> %1383, %1398
  %1400 = select <2 x i1> %1386, <2 x double> %1399, <2 x double> %1383
  br label %1401

1401:                                             ; preds = %1389, %1372, %1355, %1330
  %1402 = phi <2 x double> [ %1350, %1330 ], [ %1366, %1355 ], [ %1383, %1372 ], [ %1400, %1389 ]
  %1403 = fmul <2 x double> %1085, splat (double 2.800000e-01)
  %1404 = fcmp ogt <2 x double> %1402, %1403
  %1405 = select <2 x i1> %1404, <2 x double> %1402, <2 x double> %1403
  %1406 = fcmp olt <2 x double> %1405, %1085
  %1407 = select <2 x i1> %1406, <2 x double> %1405, <2 x double> %1085
  %1408 = select <2 x i1> %1117, <2 x double> %1089, <2 x double> %1407
  %1409 = fcmp olt <2 x double> %1248, %1245
  %1410 = select <2 x i1> %1117, <2 x i1> splat (i1 true), <2 x i1> %1409
  %1411 = select <2 x i1> %1410, <2 x double> %1248, <2 x double> %1245
  br label %1412

1412:                                             ; preds = %1189, %1401
  %1413 = phi <2 x double> [ %1411, %1401 ], [ %1248, %1189 ]
  %1414 = phi <2 x double> [ %1408, %1401 ], [ %1089, %1189 ]
  %1415 = phi <2 x double> [ %1331, %1401 ], [ %1250, %1189 ]
  %1416 = fsub <2 x double> %1245, %1413
  %1417 = select <2 x i1> %699, <2 x double> %1133, <2 x double> %1243
  store <2 x double> %1417, ptr %1132, align 16, !tbaa !26
  %1418 = select <2 x i1> %699, <2 x double> %1091, <2 x double> %1416
  store <2 x double> %1418, ptr %1090, align 16, !tbaa !26
  %1419 = getelementptr inbounds nuw i8, ptr %785, i64 784
  %1420 = load <2 x double>, ptr %1419, align 16, !tbaa !26
  %1421 = select <2 x i1> %699, <2 x double> %1420, <2 x double> %1413
  store <2 x double> %1421, ptr %1419, align 16, !tbaa !26
  %1422 = getelementptr inbounds nuw i8, ptr %785, i64 752
  %1423 = and <2 x i64> %1112, %539
  %1424 = load <2 x double>, ptr %1422, align 16, !tbaa !26
  %1425 = icmp eq <2 x i64> %1423, zeroinitializer
  %1426 = select <2 x i1> %1425, <2 x double> %1424, <2 x double> %1415
  store <2 x double> %1426, ptr %1422, align 16, !tbaa !26
  %1427 = select <2 x i1> %1425, <2 x double> %1089, <2 x double> %1414
  store <2 x double> %1427, ptr %819, align 16, !tbaa !26
  %1428 = add nuw nsw i64 %783, 1
  %1429 = load i64, ptr %169, align 8, !tbaa !20
  %1430 = icmp slt i64 %1428, %1429
  br i1 %1430, label %782, label %1455, !llvm.loop !76

1431:                                             ; preds = %1443, %782
  %1432 = phi i64 [ 0, %782 ], [ %1454, %1443 ]
  %1433 = getelementptr inbounds nuw [14 x <2 x double>], ptr %819, i64 0, i64 %1432
  %1434 = getelementptr inbounds nuw [14 x <2 x double>], ptr %820, i64 0, i64 %1432
  %1435 = load <2 x double>, ptr %1434, align 16, !tbaa !26
  %1436 = getelementptr inbounds nuw [14 x <2 x double>], ptr %821, i64 0, i64 %1432
  %1437 = load <2 x double>, ptr %1436, align 16, !tbaa !26
  %1438 = fsub <2 x double> %1435, %1437
  %1439 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %818, <2 x double> %1438, <2 x double> %1435)
  %1440 = load <2 x double>, ptr %1433, align 16, !tbaa !26
  %1441 = select <2 x i1> %699, <2 x double> %1440, <2 x double> %1439
  store <2 x double> %1441, ptr %1433, align 16, !tbaa !26
  %1442 = icmp eq i64 %1432, 12
  br i1 %1442, label %822, label %1443, !llvm.loop !77

1443:                                             ; preds = %1431
  %1444 = or disjoint i64 %1432, 1
  %1445 = getelementptr inbounds nuw [14 x <2 x double>], ptr %819, i64 0, i64 %1444
  %1446 = getelementptr inbounds nuw [14 x <2 x double>], ptr %820, i64 0, i64 %1444
  %1447 = load <2 x double>, ptr %1446, align 16, !tbaa !26
  %1448 = getelementptr inbounds nuw [14 x <2 x double>], ptr %821, i64 0, i64 %1444
  %1449 = load <2 x double>, ptr %1448, align 16, !tbaa !26
  %1450 = fsub <2 x double> %1447, %1449
  %1451 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %818, <2 x double> %1450, <2 x double> %1447)
  %1452 = load <2 x double>, ptr %1445, align 16, !tbaa !26
  %1453 = select <2 x i1> %699, <2 x double> %1452, <2 x double> %1451
  store <2 x double> %1453, ptr %1445, align 16, !tbaa !26
  %1454 = add nuw nsw i64 %1432, 2
  br label %1431

1455:                                             ; preds = %1412, %673
  %1456 = phi i64 [ %778, %673 ], [ %1429, %1412 ]
  %1457 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %1458 = fcmp ogt <2 x double> %1457, zeroinitializer
  %1459 = select <2 x i1> %1458, <2 x i64> %539, <2 x i64> zeroinitializer
  %1460 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1459)
  %1461 = icmp eq i64 %1460, 0
  br i1 %1461, label %1468, label %1462

1462:                                             ; preds = %1455
  %1463 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, <2 x i64> noundef %1459) #7
  %1464 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %1465 = icmp eq <2 x i64> %1459, zeroinitializer
  %1466 = select <2 x i1> %1465, <2 x double> %1464, <2 x double> %1463
  store <2 x double> %1466, ptr %178, align 16, !tbaa !26
  %1467 = load i64, ptr %169, align 8, !tbaa !20
  br label %1468

1468:                                             ; preds = %1455, %1462, %537
  %1469 = phi i64 [ %1456, %1455 ], [ %1467, %1462 ], [ %542, %537 ]
  %1470 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %1471 = icmp eq <2 x i64> %539, zeroinitializer
  %1472 = select <2 x i1> %1471, <2 x double> %1470, <2 x double> zeroinitializer
  store <2 x double> %1472, ptr %182, align 16, !tbaa !26
  %1473 = icmp sgt i64 %1469, 0
  br i1 %1473, label %1476, label %1474

1474:                                             ; preds = %1468
  %1475 = load <2 x double>, ptr %184, align 16, !tbaa !26
  br label %2319

1476:                                             ; preds = %1468
  %1477 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %1478 = xor <2 x i64> %539, splat (i64 -1)
  %1479 = and <2 x i64> %1477, %1478
  %1480 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1479)
  %1481 = icmp eq i64 %1480, 0
  %1482 = icmp eq <2 x i64> %1479, zeroinitializer
  br label %1486

1483:                                             ; preds = %2313
  %1484 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %1485 = icmp sgt i64 %2317, 0
  br i1 %1485, label %2324, label %2319

1486:                                             ; preds = %1476, %2313
  %1487 = phi i64 [ 0, %1476 ], [ %2316, %2313 ]
  %1488 = load ptr, ptr %142, align 8, !tbaa !28
  %1489 = getelementptr inbounds nuw %struct.Piece, ptr %1488, i64 %1487
  br i1 %1481, label %1490, label %1517

1490:                                             ; preds = %1486
  %1491 = getelementptr inbounds nuw i8, ptr %1489, i64 2112
  %1492 = load <2 x i64>, ptr %1491, align 16, !tbaa !26
  %1493 = getelementptr inbounds nuw i8, ptr %1489, i64 768
  %1494 = load <2 x double>, ptr %1493, align 16, !tbaa !26
  %1495 = getelementptr inbounds nuw i8, ptr %1489, i64 1936
  %1496 = load <2 x double>, ptr %1495, align 16, !tbaa !26
  %1497 = getelementptr inbounds nuw i8, ptr %1489, i64 1424
  %1498 = load <2 x double>, ptr %1497, align 16, !tbaa !26
  %1499 = getelementptr inbounds nuw i8, ptr %1489, i64 1440
  %1500 = load <2 x double>, ptr %1499, align 16, !tbaa !26
  %1501 = getelementptr inbounds nuw i8, ptr %1489, i64 2080
  %1502 = load <2 x i64>, ptr %1501, align 16, !tbaa !26
  %1503 = getelementptr inbounds nuw i8, ptr %1489, i64 496
  %1504 = load <2 x double>, ptr %1503, align 16, !tbaa !26
  %1505 = load <2 x double>, ptr %1489, align 16, !tbaa !26
  %1506 = getelementptr inbounds nuw i8, ptr %1489, i64 736
  %1507 = load <2 x double>, ptr %1506, align 16, !tbaa !26
  %1508 = getelementptr inbounds nuw i8, ptr %1489, i64 1952
  %1509 = load <2 x double>, ptr %1508, align 16, !tbaa !26
  %1510 = getelementptr inbounds nuw i8, ptr %1489, i64 1408
  %1511 = load <2 x double>, ptr %1510, align 16, !tbaa !26
  %1512 = getelementptr inbounds nuw i8, ptr %1489, i64 1504
  %1513 = load <2 x double>, ptr %1512, align 16, !tbaa !26
  %1514 = fmul <2 x double> %1494, %1496
  %1515 = fsub <2 x double> %1505, %1507
  %1516 = fmul <2 x double> %1515, %1509
  br label %1670

1517:                                             ; preds = %1486
  %1518 = getelementptr inbounds nuw i8, ptr %1489, i64 800
  %1519 = getelementptr inbounds nuw i8, ptr %1489, i64 768
  %1520 = load <2 x double>, ptr %1519, align 16, !tbaa !26, !noalias !78
  %1521 = getelementptr inbounds nuw i8, ptr %1489, i64 1936
  %1522 = load <2 x double>, ptr %1521, align 16, !tbaa !26, !noalias !78
  %1523 = fmul <2 x double> %1520, %1522
  %1524 = fcmp ogt <2 x double> %1523, zeroinitializer
  %1525 = select <2 x i1> %1524, <2 x double> %1523, <2 x double> zeroinitializer
  %1526 = fcmp uge <2 x double> %1525, splat (double 1.000000e+00)
  %1527 = select <2 x i1> %1526, <2 x double> splat (double 1.000000e+00), <2 x double> %1525
  %1528 = getelementptr inbounds nuw i8, ptr %1489, i64 2112
  %1529 = load <2 x i64>, ptr %1528, align 16, !tbaa !26, !noalias !78
  %1530 = load <2 x double>, ptr %180, align 16, !tbaa !26, !noalias !78
  %1531 = load <2 x double>, ptr %1518, align 16, !tbaa !26, !noalias !78
  %1532 = icmp eq <2 x i64> %1529, zeroinitializer
  %1533 = select <2 x i1> %1532, <2 x double> %1531, <2 x double> %1530
  %1534 = getelementptr inbounds nuw i8, ptr %1489, i64 896
  %1535 = load <2 x double>, ptr %1534, align 16, !tbaa !26, !noalias !78
  %1536 = fsub <2 x double> splat (double 1.000000e+00), %1527
  %1537 = getelementptr inbounds nuw i8, ptr %1489, i64 496
  %1538 = load <2 x double>, ptr %1537, align 16, !tbaa !26, !noalias !78
  %1539 = getelementptr inbounds nuw i8, ptr %1489, i64 2080
  %1540 = load <2 x i64>, ptr %1539, align 16, !tbaa !26, !noalias !78
  %1541 = load <2 x double>, ptr %1489, align 16, !tbaa !26, !noalias !78
  %1542 = getelementptr inbounds nuw i8, ptr %1489, i64 736
  %1543 = load <2 x double>, ptr %1542, align 16, !tbaa !26, !noalias !78
  %1544 = fsub <2 x double> %1541, %1543
  %1545 = getelementptr inbounds nuw i8, ptr %1489, i64 1952
  %1546 = load <2 x double>, ptr %1545, align 16, !tbaa !26, !noalias !78
  %1547 = fmul <2 x double> %1544, %1546
  %1548 = icmp eq <2 x i64> %1540, zeroinitializer
  %1549 = select <2 x i1> %1548, <2 x double> zeroinitializer, <2 x double> %1547
  %1550 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1536, <2 x double> %1538, <2 x double> %1549)
  %1551 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1535, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1552 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1535, <2 x double> %1551, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1553 = fdiv <2 x double> splat (double 1.000000e+00), %1552
  %1554 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1533, <2 x double> %1550, <2 x double> splat (double 1.000000e+00))
  %1555 = fdiv <2 x double> splat (double 1.000000e+00), %1554
  %1556 = load <2 x double>, ptr %181, align 16, !tbaa !26, !noalias !78
  %1557 = load <2 x double>, ptr %178, align 16, !tbaa !26, !noalias !78
  %1558 = select <2 x i1> %1532, <2 x double> %1557, <2 x double> %1556
  %1559 = fsub <2 x double> %1558, %1535
  %1560 = fmul <2 x double> %1559, %1555
  %1561 = fmul <2 x double> %1533, %1560
  %1562 = getelementptr inbounds nuw i8, ptr %1489, i64 1408
  %1563 = load <2 x double>, ptr %1562, align 16, !tbaa !26, !noalias !78
  %1564 = getelementptr inbounds nuw i8, ptr %1489, i64 816
  %1565 = load <2 x double>, ptr %1564, align 16, !tbaa !26, !noalias !78
  %1566 = getelementptr inbounds nuw i8, ptr %1489, i64 1424
  %1567 = load <2 x double>, ptr %1566, align 16, !tbaa !26, !noalias !78
  %1568 = getelementptr inbounds nuw i8, ptr %1489, i64 1040
  %1569 = load <2 x double>, ptr %1568, align 16, !tbaa !26, !noalias !78
  %1570 = fmul <2 x double> %1567, %1569
  %1571 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1563, <2 x double> %1565, <2 x double> %1570)
  %1572 = getelementptr inbounds nuw i8, ptr %1489, i64 1440
  %1573 = load <2 x double>, ptr %1572, align 16, !tbaa !26, !noalias !78
  %1574 = getelementptr inbounds nuw i8, ptr %1489, i64 1264
  %1575 = load <2 x double>, ptr %1574, align 16, !tbaa !26, !noalias !78
  %1576 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1573, <2 x double> %1575, <2 x double> %1571)
  %1577 = getelementptr inbounds nuw i8, ptr %1489, i64 208
  %1578 = load <2 x double>, ptr %1577, align 16, !tbaa !26, !noalias !78
  %1579 = fdiv <2 x double> %1546, %1578
  %1580 = fcmp ule <2 x double> %1527, zeroinitializer
  %1581 = or <2 x i1> %1526, %1580
  %1582 = fmul <2 x double> %1522, %1538
  %1583 = select <2 x i1> %1581, <2 x double> zeroinitializer, <2 x double> %1582
  %1584 = select <2 x i1> %1548, <2 x double> %1583, <2 x double> %1579
  %1585 = fmul <2 x double> %1533, %1561
  %1586 = fmul <2 x double> %1555, %1585
  %1587 = fmul <2 x double> %1553, %1586
  %1588 = fmul <2 x double> %1587, %1584
  %1589 = fdiv <2 x double> %1588, %1563
  %1590 = fadd <2 x double> %1589, splat (double 1.000000e+00)
  %1591 = fdiv <2 x double> splat (double 1.000000e+00), %1590
  %1592 = getelementptr inbounds nuw i8, ptr %1489, i64 864
  %1593 = load <2 x double>, ptr %1592, align 16, !tbaa !26, !noalias !78
  %1594 = fsub <2 x double> %1561, %1593
  %1595 = getelementptr inbounds nuw i8, ptr %1489, i64 1520
  %1596 = load <2 x double>, ptr %1595, align 16, !tbaa !26, !noalias !78
  %1597 = fsub <2 x double> %1576, %1596
  %1598 = fmul <2 x double> %1597, %1589
  %1599 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1594, <2 x double> %1553, <2 x double> %1598)
  %1600 = fmul <2 x double> %1599, %1591
  %1601 = getelementptr inbounds nuw i8, ptr %1489, i64 1504
  %1602 = load <2 x double>, ptr %1601, align 16, !tbaa !26, !noalias !78
  %1603 = fcmp ule <2 x double> %1602, zeroinitializer
  %1604 = fcmp ule <2 x double> %1600, zeroinitializer
  %1605 = or <2 x i1> %1603, %1604
  %1606 = select <2 x i1> %1605, <2 x double> zeroinitializer, <2 x double> %1600
  %1607 = getelementptr inbounds nuw i8, ptr %1489, i64 544
  %1608 = load <2 x double>, ptr %1607, align 16, !tbaa !26, !noalias !78
  %1609 = fcmp ogt <2 x double> %1608, zeroinitializer
  %1610 = getelementptr inbounds nuw i8, ptr %1489, i64 256
  %1611 = load <2 x double>, ptr %1610, align 16, !tbaa !26, !noalias !78
  %1612 = bitcast <2 x i1> %1609 to i2
  %1613 = icmp eq i2 %1612, 0
  br i1 %1613, label %1626, label %1614

1614:                                             ; preds = %1517
  %1615 = getelementptr inbounds nuw i8, ptr %1489, i64 912
  %1616 = load <2 x double>, ptr %1615, align 16, !tbaa !26, !noalias !78
  %1617 = fadd <2 x double> %1560, %1616
  %1618 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1617)
  %1619 = fcmp ogt <2 x double> %1608, splat (double 1.000000e-09)
  %1620 = select <2 x i1> %1619, <2 x double> %1608, <2 x double> splat (double 1.000000e-09)
  %1621 = fdiv <2 x double> %1618, %1620
  %1622 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1621)
  %1623 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1622)
  %1624 = select <2 x i1> %1609, <2 x double> %1623, <2 x double> splat (double 1.000000e+00)
  %1625 = fmul <2 x double> %1611, %1624
  br label %1626

1626:                                             ; preds = %1614, %1517
  %1627 = phi <2 x double> [ %1625, %1614 ], [ %1611, %1517 ]
  %1628 = getelementptr inbounds nuw i8, ptr %1489, i64 1024
  %1629 = load <2 x double>, ptr %1628, align 16, !tbaa !26, !noalias !78
  %1630 = getelementptr inbounds nuw i8, ptr %1489, i64 1248
  %1631 = load <2 x double>, ptr %1630, align 16, !tbaa !26, !noalias !78
  %1632 = fmul <2 x double> %1573, %1631
  %1633 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1567, <2 x double> %1629, <2 x double> %1632)
  %1634 = getelementptr inbounds nuw i8, ptr %1489, i64 304
  %1635 = load <2 x double>, ptr %1634, align 16, !tbaa !26, !noalias !78
  %1636 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1635, <2 x double> %1563, <2 x double> splat (double 1.000000e+00))
  %1637 = fdiv <2 x double> splat (double 1.000000e+00), %1636
  %1638 = fmul <2 x double> %1555, %1560
  %1639 = fmul <2 x double> %1553, %1638
  %1640 = fmul <2 x double> %1639, %1591
  %1641 = select <2 x i1> %1605, <2 x double> zeroinitializer, <2 x double> %1640
  %1642 = getelementptr inbounds nuw i8, ptr %1489, i64 272
  %1643 = load <2 x double>, ptr %1642, align 16, !tbaa !26, !noalias !78
  %1644 = fmul <2 x double> %1627, splat (double 2.500000e-01)
  %1645 = fmul <2 x double> %1550, %1644
  %1646 = fneg <2 x double> %1555
  %1647 = fmul <2 x double> %1645, %1646
  %1648 = select <2 x i1> %1609, <2 x double> %1647, <2 x double> splat (double -0.000000e+00)
  %1649 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1643, <2 x double> %1641, <2 x double> %1648)
  %1650 = fadd <2 x double> %1596, %1606
  %1651 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1643, <2 x double> %1650, <2 x double> %1627)
  %1652 = fneg <2 x double> %1635
  %1653 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1652, <2 x double> %1633, <2 x double> %1651)
  %1654 = fneg <2 x double> %1533
  %1655 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1637, <2 x double> %1653, <2 x double> %1654)
  %1656 = fmul <2 x double> %1637, %1649
  %1657 = fcmp olt <2 x double> %1656, splat (double 8.000000e-01)
  %1658 = select <2 x i1> %1657, <2 x double> %1656, <2 x double> splat (double 8.000000e-01)
  %1659 = fsub <2 x double> splat (double 1.000000e+00), %1658
  %1660 = fdiv <2 x double> %1655, %1659
  %1661 = fadd <2 x double> %1533, %1660
  %1662 = getelementptr inbounds nuw i8, ptr %1489, i64 288
  %1663 = load <2 x double>, ptr %1662, align 16, !tbaa !26, !noalias !78
  %1664 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1652, <2 x double> %1633, <2 x double> %1663)
  %1665 = fmul <2 x double> %1637, %1664
  %1666 = fcmp olt <2 x double> %1661, %1665
  %1667 = select <2 x i1> %1666, <2 x double> %1661, <2 x double> %1665
  %1668 = select <2 x i1> %1532, <2 x double> %1667, <2 x double> %1530
  %1669 = select <2 x i1> %1482, <2 x double> %1531, <2 x double> %1668
  store <2 x double> %1669, ptr %1518, align 16, !tbaa !26
  br label %1670

1670:                                             ; preds = %1490, %1626
  %1671 = phi <2 x double> [ %1516, %1490 ], [ %1547, %1626 ]
  %1672 = phi <2 x double> [ %1515, %1490 ], [ %1544, %1626 ]
  %1673 = phi <2 x double> [ %1514, %1490 ], [ %1523, %1626 ]
  %1674 = phi <2 x double> [ %1513, %1490 ], [ %1602, %1626 ]
  %1675 = phi <2 x double> [ %1511, %1490 ], [ %1563, %1626 ]
  %1676 = phi <2 x double> [ %1507, %1490 ], [ %1543, %1626 ]
  %1677 = phi <2 x double> [ %1504, %1490 ], [ %1538, %1626 ]
  %1678 = phi <2 x i64> [ %1502, %1490 ], [ %1540, %1626 ]
  %1679 = phi <2 x double> [ %1500, %1490 ], [ %1573, %1626 ]
  %1680 = phi <2 x double> [ %1498, %1490 ], [ %1567, %1626 ]
  %1681 = phi <2 x i64> [ %1492, %1490 ], [ %1529, %1626 ]
  %1682 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %1683 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %1684 = icmp eq <2 x i64> %1681, zeroinitializer
  %1685 = select <2 x i1> %1684, <2 x double> %1683, <2 x double> %1682
  %1686 = getelementptr inbounds nuw i8, ptr %1489, i64 1472
  store <2 x double> %1685, ptr %1686, align 16, !tbaa !26
  %1687 = fcmp ogt <2 x double> %1673, zeroinitializer
  %1688 = select <2 x i1> %1687, <2 x double> %1673, <2 x double> zeroinitializer
  %1689 = fcmp olt <2 x double> %1688, splat (double 1.000000e+00)
  %1690 = select <2 x i1> %1689, <2 x double> %1688, <2 x double> splat (double 1.000000e+00)
  %1691 = getelementptr inbounds nuw i8, ptr %1489, i64 528
  %1692 = load <2 x double>, ptr %1691, align 16, !tbaa !26
  %1693 = fmul <2 x double> %1690, splat (double 4.180000e+03)
  %1694 = getelementptr inbounds nuw i8, ptr %1489, i64 224
  %1695 = load <2 x double>, ptr %1694, align 16, !tbaa !26
  %1696 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1693, <2 x double> %1695, <2 x double> %1692)
  %1697 = getelementptr inbounds nuw i8, ptr %1489, i64 1424
  %1698 = getelementptr inbounds nuw i8, ptr %1489, i64 1120
  %1699 = load <2 x double>, ptr %1698, align 16, !tbaa !26
  %1700 = getelementptr inbounds nuw i8, ptr %1489, i64 1440
  %1701 = getelementptr inbounds nuw i8, ptr %1489, i64 1344
  %1702 = load <2 x double>, ptr %1701, align 16, !tbaa !26
  %1703 = fmul <2 x double> %1679, %1702
  %1704 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1680, <2 x double> %1699, <2 x double> %1703)
  %1705 = getelementptr inbounds nuw i8, ptr %1489, i64 2080
  %1706 = fcmp ule <2 x double> %1692, zeroinitializer
  %1707 = getelementptr inbounds nuw i8, ptr %1489, i64 1824
  store <2 x double> %1690, ptr %1707, align 16, !tbaa !26
  %1708 = fsub <2 x double> splat (double 1.000000e+00), %1690
  %1709 = getelementptr inbounds nuw i8, ptr %1489, i64 736
  %1710 = icmp eq <2 x i64> %1678, zeroinitializer
  %1711 = select <2 x i1> %1710, <2 x double> zeroinitializer, <2 x double> %1671
  %1712 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1708, <2 x double> %1677, <2 x double> %1711)
  %1713 = getelementptr inbounds nuw i8, ptr %1489, i64 2064
  store <2 x double> %1712, ptr %1713, align 16, !tbaa !26
  %1714 = getelementptr inbounds nuw i8, ptr %1489, i64 1408
  %1715 = fmul <2 x double> %1696, %1675
  %1716 = icmp eq <2 x i64> %1678, splat (i64 -1)
  %1717 = select <2 x i1> %1706, <2 x i1> splat (i1 true), <2 x i1> %1716
  %1718 = select <2 x i1> %1717, <2 x double> zeroinitializer, <2 x double> %1715
  %1719 = getelementptr inbounds nuw i8, ptr %1489, i64 1840
  store <2 x double> %1718, ptr %1719, align 16, !tbaa !26
  %1720 = fmul <2 x double> %1696, %1704
  %1721 = select <2 x i1> %1717, <2 x double> zeroinitializer, <2 x double> %1720
  %1722 = getelementptr inbounds nuw i8, ptr %1489, i64 1856
  store <2 x double> %1721, ptr %1722, align 16, !tbaa !26
  %1723 = getelementptr inbounds nuw i8, ptr %1489, i64 480
  %1724 = load <2 x double>, ptr %1723, align 16, !tbaa !26
  %1725 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1708, <2 x double> %1724, <2 x double> %1672)
  %1726 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %1727 = fdiv <2 x double> splat (double 1.000000e+00), %1726
  %1728 = getelementptr inbounds nuw i8, ptr %1489, i64 560
  %1729 = load <2 x double>, ptr %1728, align 16, !tbaa !26
  %1730 = fcmp ogt <2 x double> %1729, splat (double 1.000000e-30)
  %1731 = select <2 x i1> %1730, <2 x double> %1729, <2 x double> splat (double 1.000000e-30)
  %1732 = fdiv <2 x double> %1725, %1731
  %1733 = fadd <2 x double> %1727, %1732
  %1734 = getelementptr inbounds nuw i8, ptr %1489, i64 1872
  store <2 x double> %1733, ptr %1734, align 16, !tbaa !26
  %1735 = getelementptr inbounds nuw i8, ptr %1489, i64 1792
  store <2 x double> %1674, ptr %1735, align 16, !tbaa !26
  %1736 = getelementptr inbounds nuw i8, ptr %1489, i64 640
  %1737 = load <2 x double>, ptr %1736, align 16, !tbaa !26
  %1738 = getelementptr inbounds nuw i8, ptr %1489, i64 656
  %1739 = load <2 x double>, ptr %1738, align 16, !tbaa !26
  %1740 = getelementptr inbounds nuw i8, ptr %1489, i64 672
  %1741 = load <2 x double>, ptr %1740, align 16, !tbaa !26
  %1742 = getelementptr inbounds nuw i8, ptr %1489, i64 688
  %1743 = load <2 x double>, ptr %1742, align 16, !tbaa !26
  %1744 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1743, <2 x double> %1741)
  %1745 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1744, <2 x double> %1739)
  %1746 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1745, <2 x double> %1737)
  %1747 = getelementptr inbounds nuw i8, ptr %1489, i64 944
  store <2 x double> %1746, ptr %1747, align 16, !tbaa !26
  %1748 = getelementptr inbounds nuw i8, ptr %1489, i64 1168
  %1749 = load <2 x double>, ptr %1748, align 16, !tbaa !26
  %1750 = fmul <2 x double> %1680, %1749
  %1751 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1746, <2 x double> %1750)
  %1752 = getelementptr inbounds nuw i8, ptr %1489, i64 1392
  %1753 = load <2 x double>, ptr %1752, align 16, !tbaa !26
  %1754 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1679, <2 x double> %1753, <2 x double> %1751)
  %1755 = fmul <2 x double> %1754, splat (double 5.000000e-01)
  %1756 = getelementptr inbounds nuw i8, ptr %1489, i64 1776
  store <2 x double> %1755, ptr %1756, align 16, !tbaa !26
  %1757 = getelementptr inbounds nuw i8, ptr %1489, i64 576
  %1758 = load <2 x double>, ptr %1757, align 16, !tbaa !26
  %1759 = getelementptr inbounds nuw i8, ptr %1489, i64 592
  %1760 = load <2 x double>, ptr %1759, align 16, !tbaa !26
  %1761 = getelementptr inbounds nuw i8, ptr %1489, i64 608
  %1762 = load <2 x double>, ptr %1761, align 16, !tbaa !26
  %1763 = getelementptr inbounds nuw i8, ptr %1489, i64 624
  %1764 = load <2 x double>, ptr %1763, align 16, !tbaa !26
  %1765 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1764, <2 x double> %1762)
  %1766 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1765, <2 x double> %1760)
  %1767 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1766, <2 x double> %1758)
  %1768 = getelementptr inbounds nuw i8, ptr %1489, i64 1760
  store <2 x double> %1767, ptr %1768, align 16, !tbaa !26
  %1769 = getelementptr inbounds nuw i8, ptr %1489, i64 2128
  %1770 = load i64, ptr %1769, align 16, !tbaa !31
  %1771 = icmp eq i64 %1770, 0
  %1772 = getelementptr inbounds nuw i8, ptr %1489, i64 16
  %1773 = load <2 x double>, ptr %1772, align 16
  %1774 = fsub <2 x double> %1676, %1773
  %1775 = fdiv <2 x double> splat (double 1.000000e+00), %1774
  %1776 = fdiv <2 x double> %1767, %1676
  %1777 = select i1 %1771, <2 x double> %1776, <2 x double> %1775
  %1778 = load i64, ptr %132, align 16, !tbaa !21
  %1779 = getelementptr inbounds nuw i8, ptr %1489, i64 2248
  %1780 = load ptr, ptr %1779, align 8, !tbaa !36
  br i1 %1771, label %1781, label %1785

1781:                                             ; preds = %1670
  %1782 = getelementptr inbounds <2 x double>, ptr %1780, i64 %1778
  %1783 = load <2 x double>, ptr %1782, align 16, !tbaa !26
  %1784 = fmul <2 x double> %1777, %1783
  br label %1801

1785:                                             ; preds = %1670
  %1786 = shl nsw i64 %1778, 6
  %1787 = getelementptr inbounds i8, ptr %1780, i64 %1786
  %1788 = load <2 x double>, ptr %1787, align 16, !tbaa !26
  %1789 = getelementptr inbounds nuw i8, ptr %1787, i64 16
  %1790 = load <2 x double>, ptr %1789, align 16, !tbaa !26
  %1791 = getelementptr inbounds nuw i8, ptr %1787, i64 32
  %1792 = load <2 x double>, ptr %1791, align 16, !tbaa !26
  %1793 = getelementptr inbounds nuw i8, ptr %1787, i64 48
  %1794 = load <2 x double>, ptr %1793, align 16, !tbaa !26
  %1795 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1794, <2 x double> %1792)
  %1796 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1795, <2 x double> %1790)
  %1797 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1796, <2 x double> %1788)
  %1798 = icmp sgt i64 %1778, %1770
  %1799 = fmul <2 x double> %1777, %1797
  %1800 = select i1 %1798, <2 x double> %1799, <2 x double> %1797
  br label %1801

1801:                                             ; preds = %1781, %1785
  %1802 = phi <2 x double> [ %1784, %1781 ], [ %1800, %1785 ]
  %1803 = getelementptr inbounds nuw i8, ptr %1489, i64 800
  %1804 = load <2 x double>, ptr %1803, align 16, !tbaa !26
  %1805 = getelementptr inbounds nuw i8, ptr %1489, i64 1488
  %1806 = load <2 x double>, ptr %1805, align 16, !tbaa !26
  %1807 = fcmp ogt <2 x double> %1672, splat (double 0x3D719799812DEA11)
  %1808 = select <2 x i1> %1807, <2 x double> %1672, <2 x double> splat (double 0x3D719799812DEA11)
  %1809 = getelementptr inbounds nuw i8, ptr %1489, i64 1728
  store <2 x double> %1775, ptr %1809, align 16, !tbaa !26
  %1810 = getelementptr inbounds nuw i8, ptr %1489, i64 176
  %1811 = load <2 x double>, ptr %1810, align 16, !tbaa !26
  %1812 = fdiv <2 x double> %1811, %1808
  %1813 = getelementptr inbounds nuw i8, ptr %1489, i64 1744
  store <2 x double> %1812, ptr %1813, align 16, !tbaa !26
  %1814 = getelementptr inbounds nuw i8, ptr %1489, i64 2136
  %1815 = load ptr, ptr %1814, align 8, !tbaa !58
  %1816 = load i64, ptr %132, align 16, !tbaa !21
  %1817 = getelementptr <2 x double>, ptr %1815, i64 %1816
  %1818 = getelementptr i8, ptr %1817, i64 -16
  %1819 = load <2 x double>, ptr %1818, align 16, !tbaa !26
  %1820 = fadd <2 x double> %1806, %1819
  %1821 = fmul <2 x double> %1820, splat (double 5.000000e-01)
  %1822 = getelementptr inbounds nuw i8, ptr %1489, i64 48
  %1823 = load <2 x double>, ptr %1822, align 16, !tbaa !26
  %1824 = getelementptr inbounds nuw i8, ptr %1489, i64 64
  %1825 = load <2 x double>, ptr %1824, align 16, !tbaa !26
  %1826 = getelementptr inbounds nuw i8, ptr %1489, i64 80
  %1827 = load <2 x double>, ptr %1826, align 16, !tbaa !26
  %1828 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1821, <2 x double> %1827, <2 x double> %1825)
  %1829 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1821, <2 x double> %1828, <2 x double> %1823)
  %1830 = fmul <2 x double> %1802, %1829
  %1831 = fmul <2 x double> %1690, %1830
  %1832 = getelementptr inbounds nuw i8, ptr %1489, i64 512
  %1833 = load <2 x double>, ptr %1832, align 16, !tbaa !26
  %1834 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1831, <2 x double> %1833, <2 x double> splat (double 1.000000e+00))
  %1835 = fdiv <2 x double> splat (double 1.000000e+00), %1834
  %1836 = select <2 x i1> %1710, <2 x double> %1835, <2 x double> splat (double 1.000000e+00)
  %1837 = getelementptr inbounds nuw i8, ptr %1489, i64 1808
  store <2 x double> %1836, ptr %1837, align 16, !tbaa !26
  %1838 = fmul <2 x double> %1830, %1836
  %1839 = getelementptr inbounds nuw i8, ptr %1489, i64 1600
  store <2 x double> %1838, ptr %1839, align 16, !tbaa !26
  %1840 = fmul <2 x double> %1755, splat (double 2.000000e+00)
  %1841 = getelementptr inbounds nuw i8, ptr %1489, i64 96
  %1842 = load <2 x double>, ptr %1841, align 16, !tbaa !26
  %1843 = getelementptr inbounds nuw i8, ptr %1489, i64 112
  %1844 = load <2 x double>, ptr %1843, align 16, !tbaa !26
  %1845 = getelementptr inbounds nuw i8, ptr %1489, i64 128
  %1846 = load <2 x double>, ptr %1845, align 16, !tbaa !26
  %1847 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1806, <2 x double> %1846, <2 x double> %1844)
  %1848 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1806, <2 x double> %1847, <2 x double> %1842)
  %1849 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1840, <2 x double> %1848, <2 x double> %1838)
  %1850 = getelementptr inbounds nuw i8, ptr %1489, i64 1632
  store <2 x double> %1849, ptr %1850, align 16, !tbaa !26
  %1851 = fmul <2 x double> %1708, %1804
  %1852 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1851, <2 x double> %1677, <2 x double> splat (double 1.000000e+00))
  %1853 = fdiv <2 x double> %1804, %1852
  %1854 = load i64, ptr %133, align 8, !tbaa !22
  %1855 = sitofp i64 %1854 to double
  %1856 = fmul double %1855, 2.000000e+00
  %1857 = insertelement <2 x double> poison, double %1856, i64 0
  %1858 = shufflevector <2 x double> %1857, <2 x double> poison, <2 x i32> zeroinitializer
  %1859 = fmul <2 x double> %1812, %1858
  %1860 = fadd <2 x double> %1853, %1859
  %1861 = fdiv <2 x double> %1853, %1860
  %1862 = fmul <2 x double> %1767, %1859
  %1863 = select <2 x i1> %1710, <2 x double> %1853, <2 x double> %1862
  %1864 = getelementptr inbounds nuw i8, ptr %1489, i64 1616
  store <2 x double> %1863, ptr %1864, align 16, !tbaa !26
  %1865 = fmul <2 x double> %1859, %1861
  %1866 = select <2 x i1> %1710, <2 x double> %1853, <2 x double> %1865
  %1867 = getelementptr inbounds nuw i8, ptr %1489, i64 1648
  store <2 x double> %1866, ptr %1867, align 16, !tbaa !26
  %1868 = select <2 x i1> %1710, <2 x double> splat (double 1.000000e+00), <2 x double> %1861
  %1869 = getelementptr inbounds nuw i8, ptr %1489, i64 1664
  store <2 x double> %1868, ptr %1869, align 16, !tbaa !26
  br i1 %1771, label %2031, label %1870

1870:                                             ; preds = %1801
  %1871 = getelementptr inbounds nuw i8, ptr %1489, i64 144
  %1872 = load <2 x double>, ptr %1871, align 16, !tbaa !26
  %1873 = getelementptr inbounds nuw i8, ptr %1489, i64 160
  %1874 = load <2 x double>, ptr %1873, align 16, !tbaa !26
  %1875 = getelementptr inbounds nuw i8, ptr %1489, i64 384
  %1876 = load <2 x double>, ptr %1875, align 16, !tbaa !26
  %1877 = load i64, ptr %132, align 16, !tbaa !21
  %1878 = fsub <2 x double> %1746, %1876
  %1879 = fmul <2 x double> %1844, splat (double 5.000000e-01)
  %1880 = fmul <2 x double> %1846, splat (double 0x3FE5555555555555)
  %1881 = getelementptr inbounds nuw i8, ptr %1489, i64 2224
  %1882 = load ptr, ptr %1881, align 16, !tbaa !73
  %1883 = getelementptr inbounds nuw i8, ptr %1489, i64 2232
  %1884 = load ptr, ptr %1883, align 8, !tbaa !49
  %1885 = getelementptr inbounds nuw i8, ptr %1489, i64 2160
  %1886 = load ptr, ptr %1885, align 16, !tbaa !59
  %1887 = getelementptr inbounds nuw i8, ptr %1489, i64 2200
  %1888 = load ptr, ptr %1887, align 8, !tbaa !81
  %1889 = getelementptr inbounds nuw i8, ptr %1489, i64 2208
  %1890 = load ptr, ptr %1889, align 16, !tbaa !82
  %1891 = getelementptr inbounds nuw i8, ptr %1489, i64 2216
  %1892 = load ptr, ptr %1891, align 8, !tbaa !83
  %1893 = getelementptr inbounds nuw i8, ptr %1489, i64 2184
  %1894 = load ptr, ptr %1893, align 8, !tbaa !84
  %1895 = getelementptr inbounds nuw i8, ptr %1489, i64 2192
  %1896 = load ptr, ptr %1895, align 16, !tbaa !85
  %1897 = icmp sgt i64 %1877, 0
  br i1 %1897, label %1898, label %2143

1898:                                             ; preds = %1870
  %1899 = load <2 x double>, ptr %1815, align 16, !tbaa !26
  %1900 = getelementptr inbounds nuw i8, ptr %1489, i64 720
  %1901 = load <2 x double>, ptr %1900, align 16, !tbaa !26
  %1902 = getelementptr inbounds nuw i8, ptr %1489, i64 704
  %1903 = load <2 x double>, ptr %1902, align 16, !tbaa !26
  %1904 = fmul <2 x double> %1755, splat (double -2.000000e+00)
  %1905 = fmul <2 x double> %1904, %1806
  %1906 = fmul <2 x double> %1806, %1905
  %1907 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1806, <2 x double> %1880, <2 x double> %1879)
  %1908 = fmul <2 x double> %1906, %1907
  %1909 = getelementptr inbounds nuw i8, ptr %1489, i64 2248
  %1910 = fmul <2 x double> %1774, %1901
  %1911 = fdiv <2 x double> %1903, %1872
  br label %1912

1912:                                             ; preds = %1898, %1996
  %1913 = phi <2 x double> [ %1899, %1898 ], [ %2000, %1996 ]
  %1914 = phi <2 x double> [ zeroinitializer, %1898 ], [ %1997, %1996 ]
  %1915 = phi <2 x double> [ zeroinitializer, %1898 ], [ %1998, %1996 ]
  %1916 = phi <2 x double> [ zeroinitializer, %1898 ], [ %1999, %1996 ]
  %1917 = phi <2 x double> [ zeroinitializer, %1898 ], [ %2026, %1996 ]
  %1918 = phi <2 x double> [ zeroinitializer, %1898 ], [ %2028, %1996 ]
  %1919 = phi <2 x double> [ %1874, %1898 ], [ %2001, %1996 ]
  %1920 = phi i64 [ 0, %1898 ], [ %1922, %1996 ]
  %1921 = phi <2 x double> [ zeroinitializer, %1898 ], [ %2002, %1996 ]
  %1922 = add nuw nsw i64 %1920, 1
  %1923 = icmp slt i64 %1922, %1877
  br i1 %1923, label %1924, label %1993

1924:                                             ; preds = %1912
  %1925 = getelementptr inbounds nuw <2 x double>, ptr %1815, i64 %1922
  %1926 = load <2 x double>, ptr %1925, align 16, !tbaa !26
  %1927 = icmp slt i64 %1922, %1770
  br i1 %1927, label %1935, label %1928

1928:                                             ; preds = %1924
  %1929 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1926, <2 x double> %1846, <2 x double> %1844)
  %1930 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1926, <2 x double> %1929, <2 x double> %1842)
  %1931 = fneg <2 x double> %1926
  %1932 = fmul <2 x double> %1926, %1931
  %1933 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1926, <2 x double> %1880, <2 x double> %1879)
  %1934 = fmul <2 x double> %1932, %1933
  br label %1935

1935:                                             ; preds = %1924, %1928
  %1936 = phi <2 x double> [ %1930, %1928 ], [ %1874, %1924 ]
  %1937 = phi <2 x double> [ %1934, %1928 ], [ zeroinitializer, %1924 ]
  %1938 = load i64, ptr %1769, align 16, !tbaa !31
  %1939 = icmp eq i64 %1938, 0
  %1940 = load ptr, ptr %1909, align 8, !tbaa !36
  br i1 %1939, label %1941, label %1945

1941:                                             ; preds = %1935
  %1942 = getelementptr inbounds nuw <2 x double>, ptr %1940, i64 %1922
  %1943 = load <2 x double>, ptr %1942, align 16, !tbaa !26
  %1944 = fmul <2 x double> %1775, %1943
  br label %1961

1945:                                             ; preds = %1935
  %1946 = shl nsw i64 %1922, 6
  %1947 = getelementptr inbounds nuw i8, ptr %1940, i64 %1946
  %1948 = load <2 x double>, ptr %1947, align 16, !tbaa !26
  %1949 = getelementptr inbounds nuw i8, ptr %1947, i64 16
  %1950 = load <2 x double>, ptr %1949, align 16, !tbaa !26
  %1951 = getelementptr inbounds nuw i8, ptr %1947, i64 32
  %1952 = load <2 x double>, ptr %1951, align 16, !tbaa !26
  %1953 = getelementptr inbounds nuw i8, ptr %1947, i64 48
  %1954 = load <2 x double>, ptr %1953, align 16, !tbaa !26
  %1955 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1954, <2 x double> %1952)
  %1956 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1955, <2 x double> %1950)
  %1957 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1676, <2 x double> %1956, <2 x double> %1948)
  %1958 = icmp slt i64 %1920, %1938
  %1959 = fmul <2 x double> %1775, %1957
  %1960 = select i1 %1958, <2 x double> %1957, <2 x double> %1959
  br label %1961

1961:                                             ; preds = %1945, %1941
  %1962 = phi <2 x double> [ %1944, %1941 ], [ %1960, %1945 ]
  %1963 = icmp slt i64 %1920, %1938
  br i1 %1963, label %1970, label %1964

1964:                                             ; preds = %1961
  %1965 = fadd <2 x double> %1913, %1926
  %1966 = fmul <2 x double> %1965, splat (double 5.000000e-01)
  %1967 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1966, <2 x double> %1827, <2 x double> %1825)
  %1968 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1966, <2 x double> %1967, <2 x double> %1823)
  %1969 = fmul <2 x double> %1968, %1962
  br label %1980

1970:                                             ; preds = %1961
  %1971 = icmp slt i64 %1922, %1938
  br i1 %1971, label %1972, label %1974

1972:                                             ; preds = %1970
  %1973 = fmul <2 x double> %1872, %1962
  br label %1980

1974:                                             ; preds = %1970
  %1975 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1926, <2 x double> %1827, <2 x double> %1825)
  %1976 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1926, <2 x double> %1975, <2 x double> %1823)
  %1977 = fdiv <2 x double> %1910, %1976
  %1978 = fadd <2 x double> %1911, %1977
  %1979 = fdiv <2 x double> %1962, %1978
  br label %1980

1980:                                             ; preds = %1964, %1972, %1974
  %1981 = phi <2 x double> [ %1969, %1964 ], [ %1973, %1972 ], [ %1979, %1974 ]
  br i1 %1927, label %1986, label %1982

1982:                                             ; preds = %1980
  %1983 = getelementptr inbounds nuw <2 x double>, ptr %1882, i64 %1922
  %1984 = load <2 x double>, ptr %1983, align 16, !tbaa !26
  %1985 = fmul <2 x double> %1755, %1984
  br label %1986

1986:                                             ; preds = %1980, %1982
  %1987 = phi <2 x double> [ %1985, %1982 ], [ zeroinitializer, %1980 ]
  %1988 = fneg <2 x double> %1987
  %1989 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1988, <2 x double> %1919, <2 x double> %1981)
  %1990 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1987, <2 x double> %1936, <2 x double> %1981)
  %1991 = fadd <2 x double> %1921, %1937
  %1992 = fmul <2 x double> %1991, %1987
  br label %1996

1993:                                             ; preds = %1912
  %1994 = load <2 x double>, ptr %1839, align 16, !tbaa !26
  %1995 = load <2 x double>, ptr %1850, align 16, !tbaa !26
  br label %1996

1996:                                             ; preds = %1993, %1986
  %1997 = phi <2 x double> [ %1989, %1986 ], [ %1994, %1993 ]
  %1998 = phi <2 x double> [ %1990, %1986 ], [ %1995, %1993 ]
  %1999 = phi <2 x double> [ %1992, %1986 ], [ %1908, %1993 ]
  %2000 = phi <2 x double> [ %1926, %1986 ], [ %1913, %1993 ]
  %2001 = phi <2 x double> [ %1936, %1986 ], [ %1919, %1993 ]
  %2002 = phi <2 x double> [ %1937, %1986 ], [ %1921, %1993 ]
  %2003 = getelementptr inbounds nuw <2 x double>, ptr %1884, i64 %1920
  %2004 = load <2 x double>, ptr %2003, align 16, !tbaa !26
  %2005 = icmp slt i64 %1920, %1770
  %2006 = select i1 %2005, <2 x double> %1876, <2 x double> %1878
  %2007 = fmul <2 x double> %1675, %2006
  %2008 = fmul <2 x double> %2007, %2004
  %2009 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2008, <2 x double> %1919, <2 x double> %1997)
  %2010 = fadd <2 x double> %1915, %2009
  %2011 = fsub <2 x double> %1999, %1916
  %2012 = fneg <2 x double> %2008
  %2013 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2012, <2 x double> %1921, <2 x double> %2011)
  %2014 = getelementptr inbounds nuw <2 x double>, ptr %1886, i64 %1920
  %2015 = load <2 x double>, ptr %2014, align 16, !tbaa !26
  %2016 = fsub <2 x double> %2013, %2015
  %2017 = fneg <2 x double> %1914
  %2018 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2017, <2 x double> %1918, <2 x double> %2010)
  %2019 = fdiv <2 x double> splat (double 1.000000e+00), %2018
  %2020 = getelementptr inbounds nuw <2 x double>, ptr %1888, i64 %1920
  store <2 x double> %2016, ptr %2020, align 16, !tbaa !26
  %2021 = getelementptr inbounds nuw <2 x double>, ptr %1890, i64 %1920
  store <2 x double> %1914, ptr %2021, align 16, !tbaa !26
  %2022 = fadd <2 x double> %1914, %1998
  %2023 = fsub <2 x double> %2022, %2010
  %2024 = getelementptr inbounds nuw <2 x double>, ptr %1892, i64 %1920
  store <2 x double> %2023, ptr %2024, align 16, !tbaa !26
  %2025 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1914, <2 x double> %1917, <2 x double> %2016)
  %2026 = fmul <2 x double> %2025, %2019
  %2027 = getelementptr inbounds nuw <2 x double>, ptr %1894, i64 %1920
  store <2 x double> %2026, ptr %2027, align 16, !tbaa !26
  %2028 = fmul <2 x double> %1998, %2019
  %2029 = getelementptr inbounds nuw <2 x double>, ptr %1896, i64 %1920
  store <2 x double> %2028, ptr %2029, align 16, !tbaa !26
  %2030 = icmp eq i64 %1922, %1877
  br i1 %2030, label %2143, label %1912, !llvm.loop !86

2031:                                             ; preds = %1801
  %2032 = getelementptr inbounds nuw i8, ptr %1489, i64 384
  %2033 = load <2 x double>, ptr %2032, align 16, !tbaa !26
  %2034 = load i64, ptr %132, align 16, !tbaa !21
  %2035 = fsub <2 x double> %1746, %2033
  %2036 = fmul <2 x double> %1675, %2035
  %2037 = fmul <2 x double> %1844, splat (double 5.000000e-01)
  %2038 = fmul <2 x double> %1846, splat (double 0x3FE5555555555555)
  %2039 = getelementptr inbounds nuw i8, ptr %1489, i64 2224
  %2040 = load ptr, ptr %2039, align 16, !tbaa !73
  %2041 = getelementptr inbounds nuw i8, ptr %1489, i64 2232
  %2042 = load ptr, ptr %2041, align 8, !tbaa !49
  %2043 = getelementptr inbounds nuw i8, ptr %1489, i64 2160
  %2044 = load ptr, ptr %2043, align 16, !tbaa !59
  %2045 = getelementptr inbounds nuw i8, ptr %1489, i64 2200
  %2046 = load ptr, ptr %2045, align 8, !tbaa !81
  %2047 = getelementptr inbounds nuw i8, ptr %1489, i64 2208
  %2048 = load ptr, ptr %2047, align 16, !tbaa !82
  %2049 = getelementptr inbounds nuw i8, ptr %1489, i64 2216
  %2050 = load ptr, ptr %2049, align 8, !tbaa !83
  %2051 = getelementptr inbounds nuw i8, ptr %1489, i64 2184
  %2052 = load ptr, ptr %2051, align 8, !tbaa !84
  %2053 = getelementptr inbounds nuw i8, ptr %1489, i64 2192
  %2054 = load ptr, ptr %2053, align 16, !tbaa !85
  %2055 = icmp sgt i64 %2034, 0
  br i1 %2055, label %2056, label %2143

2056:                                             ; preds = %2031
  %2057 = load <2 x double>, ptr %1815, align 16, !tbaa !26
  %2058 = fneg <2 x double> %2057
  %2059 = fmul <2 x double> %2057, %2058
  %2060 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2057, <2 x double> %2038, <2 x double> %2037)
  %2061 = fmul <2 x double> %2059, %2060
  %2062 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2057, <2 x double> %1846, <2 x double> %1844)
  %2063 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2057, <2 x double> %2062, <2 x double> %1842)
  %2064 = fmul <2 x double> %1755, splat (double -2.000000e+00)
  %2065 = fmul <2 x double> %2064, %1806
  %2066 = fmul <2 x double> %1806, %2065
  %2067 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1806, <2 x double> %2038, <2 x double> %2037)
  %2068 = fmul <2 x double> %2066, %2067
  %2069 = getelementptr inbounds nuw i8, ptr %1489, i64 2248
  br label %2070

2070:                                             ; preds = %2056, %2111
  %2071 = phi <2 x double> [ %2057, %2056 ], [ %2115, %2111 ]
  %2072 = phi <2 x double> [ zeroinitializer, %2056 ], [ %2112, %2111 ]
  %2073 = phi <2 x double> [ zeroinitializer, %2056 ], [ %2113, %2111 ]
  %2074 = phi <2 x double> [ zeroinitializer, %2056 ], [ %2114, %2111 ]
  %2075 = phi <2 x double> [ zeroinitializer, %2056 ], [ %2138, %2111 ]
  %2076 = phi <2 x double> [ zeroinitializer, %2056 ], [ %2140, %2111 ]
  %2077 = phi <2 x double> [ %2063, %2056 ], [ %2116, %2111 ]
  %2078 = phi i64 [ 0, %2056 ], [ %2080, %2111 ]
  %2079 = phi <2 x double> [ %2061, %2056 ], [ %2117, %2111 ]
  %2080 = add nuw nsw i64 %2078, 1
  %2081 = icmp slt i64 %2080, %2034
  br i1 %2081, label %2082, label %2108

2082:                                             ; preds = %2070
  %2083 = getelementptr inbounds nuw <2 x double>, ptr %1815, i64 %2080
  %2084 = load <2 x double>, ptr %2083, align 16, !tbaa !26
  %2085 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2084, <2 x double> %1846, <2 x double> %1844)
  %2086 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2084, <2 x double> %2085, <2 x double> %1842)
  %2087 = fneg <2 x double> %2084
  %2088 = fmul <2 x double> %2084, %2087
  %2089 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2084, <2 x double> %2038, <2 x double> %2037)
  %2090 = fmul <2 x double> %2088, %2089
  %2091 = fadd <2 x double> %2071, %2084
  %2092 = fmul <2 x double> %2091, splat (double 5.000000e-01)
  %2093 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2092, <2 x double> %1827, <2 x double> %1825)
  %2094 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2092, <2 x double> %2093, <2 x double> %1823)
  %2095 = load ptr, ptr %2069, align 8, !tbaa !36
  %2096 = getelementptr inbounds nuw <2 x double>, ptr %2095, i64 %2080
  %2097 = load <2 x double>, ptr %2096, align 16, !tbaa !26
  %2098 = fmul <2 x double> %1776, %2097
  %2099 = fmul <2 x double> %2098, %2094
  %2100 = getelementptr inbounds nuw <2 x double>, ptr %2040, i64 %2080
  %2101 = load <2 x double>, ptr %2100, align 16, !tbaa !26
  %2102 = fmul <2 x double> %1755, %2101
  %2103 = fneg <2 x double> %2102
  %2104 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2103, <2 x double> %2077, <2 x double> %2099)
  %2105 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2102, <2 x double> %2086, <2 x double> %2099)
  %2106 = fadd <2 x double> %2079, %2090
  %2107 = fmul <2 x double> %2106, %2102
  br label %2111

2108:                                             ; preds = %2070
  %2109 = load <2 x double>, ptr %1839, align 16, !tbaa !26
  %2110 = load <2 x double>, ptr %1850, align 16, !tbaa !26
  br label %2111

2111:                                             ; preds = %2108, %2082
  %2112 = phi <2 x double> [ %2104, %2082 ], [ %2109, %2108 ]
  %2113 = phi <2 x double> [ %2105, %2082 ], [ %2110, %2108 ]
  %2114 = phi <2 x double> [ %2107, %2082 ], [ %2068, %2108 ]
  %2115 = phi <2 x double> [ %2084, %2082 ], [ %2071, %2108 ]
  %2116 = phi <2 x double> [ %2086, %2082 ], [ %2077, %2108 ]
  %2117 = phi <2 x double> [ %2090, %2082 ], [ %2079, %2108 ]
  %2118 = getelementptr inbounds nuw <2 x double>, ptr %2042, i64 %2078
  %2119 = load <2 x double>, ptr %2118, align 16, !tbaa !26
  %2120 = fmul <2 x double> %2036, %2119
  %2121 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2120, <2 x double> %2077, <2 x double> %2112)
  %2122 = fadd <2 x double> %2073, %2121
  %2123 = fsub <2 x double> %2114, %2074
  %2124 = fneg <2 x double> %2120
  %2125 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2124, <2 x double> %2079, <2 x double> %2123)
  %2126 = getelementptr inbounds nuw <2 x double>, ptr %2044, i64 %2078
  %2127 = load <2 x double>, ptr %2126, align 16, !tbaa !26
  %2128 = fsub <2 x double> %2125, %2127
  %2129 = fneg <2 x double> %2072
  %2130 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2129, <2 x double> %2076, <2 x double> %2122)
  %2131 = fdiv <2 x double> splat (double 1.000000e+00), %2130
  %2132 = getelementptr inbounds nuw <2 x double>, ptr %2046, i64 %2078
  store <2 x double> %2128, ptr %2132, align 16, !tbaa !26
  %2133 = getelementptr inbounds nuw <2 x double>, ptr %2048, i64 %2078
  store <2 x double> %2072, ptr %2133, align 16, !tbaa !26
  %2134 = fadd <2 x double> %2072, %2113
  %2135 = fsub <2 x double> %2134, %2122
  %2136 = getelementptr inbounds nuw <2 x double>, ptr %2050, i64 %2078
  store <2 x double> %2135, ptr %2136, align 16, !tbaa !26
  %2137 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2072, <2 x double> %2075, <2 x double> %2128)
  %2138 = fmul <2 x double> %2137, %2131
  %2139 = getelementptr inbounds nuw <2 x double>, ptr %2052, i64 %2078
  store <2 x double> %2138, ptr %2139, align 16, !tbaa !26
  %2140 = fmul <2 x double> %2113, %2131
  %2141 = getelementptr inbounds nuw <2 x double>, ptr %2054, i64 %2078
  store <2 x double> %2140, ptr %2141, align 16, !tbaa !26
  %2142 = icmp eq i64 %2080, %2034
  br i1 %2142, label %2143, label %2070, !llvm.loop !87

2143:                                             ; preds = %1996, %2111, %1870, %2031
  %2144 = getelementptr inbounds nuw i8, ptr %1489, i64 2032
  store <2 x double> splat (double 1.000000e+09), ptr %2144, align 16, !tbaa !26
  %2145 = getelementptr inbounds nuw i8, ptr %1489, i64 2184
  %2146 = load ptr, ptr %2145, align 8, !tbaa !84
  %2147 = load i64, ptr %132, align 16, !tbaa !21
  %2148 = add nsw i64 %2147, -1
  %2149 = getelementptr inbounds <2 x double>, ptr %2146, i64 %2148
  %2150 = load <2 x double>, ptr %2149, align 16, !tbaa !26
  %2151 = getelementptr inbounds nuw i8, ptr %1489, i64 2192
  %2152 = load ptr, ptr %2151, align 16, !tbaa !85
  %2153 = getelementptr inbounds <2 x double>, ptr %2152, i64 %2148
  %2154 = load <2 x double>, ptr %2153, align 16, !tbaa !26
  %2155 = load <2 x double>, ptr %1839, align 16, !tbaa !26
  %2156 = fmul <2 x double> %2150, %2155
  %2157 = fsub <2 x double> splat (double 1.000000e+00), %2154
  %2158 = fmul <2 x double> %2155, %2157
  %2159 = load <2 x double>, ptr %1864, align 16, !tbaa !26
  %2160 = load <2 x double>, ptr %1686, align 16, !tbaa !26
  %2161 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2159, <2 x double> %2160, <2 x double> %2156)
  %2162 = load <2 x double>, ptr %1722, align 16, !tbaa !26
  %2163 = fsub <2 x double> %2161, %2162
  %2164 = fadd <2 x double> %2158, %2159
  %2165 = load <2 x double>, ptr %1719, align 16, !tbaa !26
  %2166 = fadd <2 x double> %2164, %2165
  %2167 = load <2 x i64>, ptr %1705, align 16, !tbaa !26
  %2168 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2167)
  %2169 = icmp eq i64 %2168, 0
  %2170 = load i64, ptr %133, align 8, !tbaa !22
  br i1 %2169, label %2171, label %2186

2171:                                             ; preds = %2143
  %2172 = icmp slt i64 %2170, 0
  br i1 %2172, label %2177, label %2173

2173:                                             ; preds = %2171
  %2174 = getelementptr inbounds nuw i8, ptr %1489, i64 352
  %2175 = getelementptr inbounds nuw i8, ptr %1489, i64 2304
  %2176 = load <2 x double>, ptr %2174, align 16, !tbaa !26
  br label %2179

2177:                                             ; preds = %2179, %2171
  %2178 = getelementptr inbounds nuw i8, ptr %1489, i64 1552
  store <2 x double> %2163, ptr %2178, align 16, !tbaa !26
  br label %2313

2179:                                             ; preds = %2173, %2179
  %2180 = phi i64 [ 0, %2173 ], [ %2183, %2179 ]
  %2181 = load ptr, ptr %2175, align 16, !tbaa !88
  %2182 = getelementptr inbounds nuw <2 x double>, ptr %2181, i64 %2180
  store <2 x double> %2176, ptr %2182, align 16, !tbaa !26
  %2183 = add nuw nsw i64 %2180, 1
  %2184 = load i64, ptr %133, align 8, !tbaa !22
  %2185 = icmp slt i64 %2180, %2184
  br i1 %2185, label %2179, label %2177, !llvm.loop !89

2186:                                             ; preds = %2143
  %2187 = load <2 x double>, ptr %1709, align 16, !tbaa !26
  %2188 = load <2 x double>, ptr %1735, align 16, !tbaa !26
  %2189 = getelementptr inbounds nuw i8, ptr %1489, i64 320
  %2190 = load <2 x double>, ptr %2189, align 16, !tbaa !26
  %2191 = fmul <2 x double> %2188, %2190
  %2192 = load <2 x double>, ptr %1489, align 16, !tbaa !26
  %2193 = fsub <2 x double> %2192, %2187
  %2194 = sitofp i64 %2170 to double
  %2195 = insertelement <2 x double> poison, double %2194, i64 0
  %2196 = shufflevector <2 x double> %2195, <2 x double> poison, <2 x i32> zeroinitializer
  %2197 = fdiv <2 x double> %2193, %2196
  %2198 = load <2 x double>, ptr %1867, align 16, !tbaa !26
  %2199 = load <2 x double>, ptr %1869, align 16, !tbaa !26
  %2200 = getelementptr inbounds nuw i8, ptr %1489, i64 352
  %2201 = load <2 x double>, ptr %2200, align 16, !tbaa !26
  %2202 = getelementptr inbounds nuw i8, ptr %1489, i64 2304
  %2203 = load ptr, ptr %2202, align 16, !tbaa !88
  %2204 = getelementptr inbounds <2 x double>, ptr %2203, i64 %2170
  store <2 x double> %2201, ptr %2204, align 16, !tbaa !26
  %2205 = icmp sgt i64 %2170, 0
  br i1 %2205, label %2206, label %2297

2206:                                             ; preds = %2186
  %2207 = fneg <2 x double> %2191
  %2208 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2207, <2 x double> %2199, <2 x double> %2198)
  %2209 = fsub <2 x double> splat (double 1.000000e+00), %2199
  %2210 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2191, <2 x double> %2209, <2 x double> %2198)
  %2211 = getelementptr inbounds nuw i8, ptr %1489, i64 2312
  %2212 = getelementptr inbounds nuw i8, ptr %1489, i64 2320
  %2213 = getelementptr inbounds nuw i8, ptr %1489, i64 192
  %2214 = fmul <2 x double> %2191, splat (double -5.000000e-01)
  %2215 = getelementptr inbounds nuw i8, ptr %1489, i64 2280
  %2216 = getelementptr inbounds nuw i8, ptr %1489, i64 2288
  %2217 = getelementptr inbounds nuw i8, ptr %1489, i64 2296
  br label %2218

2218:                                             ; preds = %2206, %2272
  %2219 = phi <2 x double> [ %2210, %2206 ], [ %2274, %2272 ]
  %2220 = phi <2 x double> [ %2208, %2206 ], [ %2275, %2272 ]
  %2221 = phi <2 x double> [ %2160, %2206 ], [ %2290, %2272 ]
  %2222 = phi <2 x double> [ zeroinitializer, %2206 ], [ %2293, %2272 ]
  %2223 = phi <2 x double> [ %2201, %2206 ], [ %2236, %2272 ]
  %2224 = phi i64 [ %2170, %2206 ], [ %2225, %2272 ]
  %2225 = add nsw i64 %2224, -1
  %2226 = uitofp nneg i64 %2225 to double
  %2227 = insertelement <2 x double> poison, double %2226, i64 0
  %2228 = shufflevector <2 x double> %2227, <2 x double> poison, <2 x i32> zeroinitializer
  %2229 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2228, <2 x double> %2197, <2 x double> %2187)
  %2230 = load <2 x double>, ptr %1736, align 16, !tbaa !26
  %2231 = load <2 x double>, ptr %1738, align 16, !tbaa !26
  %2232 = load <2 x double>, ptr %1740, align 16, !tbaa !26
  %2233 = load <2 x double>, ptr %1742, align 16, !tbaa !26
  %2234 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2229, <2 x double> %2233, <2 x double> %2232)
  %2235 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2229, <2 x double> %2234, <2 x double> %2231)
  %2236 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2229, <2 x double> %2235, <2 x double> %2230)
  %2237 = load <2 x double>, ptr %1714, align 16, !tbaa !26
  %2238 = load <2 x double>, ptr %1697, align 16, !tbaa !26
  %2239 = load ptr, ptr %2211, align 8, !tbaa !50
  %2240 = getelementptr inbounds nuw <2 x double>, ptr %2239, i64 %2225
  %2241 = load <2 x double>, ptr %2240, align 16, !tbaa !26
  %2242 = fmul <2 x double> %2238, %2241
  %2243 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2237, <2 x double> %2236, <2 x double> %2242)
  %2244 = load <2 x double>, ptr %1700, align 16, !tbaa !26
  %2245 = load ptr, ptr %2212, align 16, !tbaa !60
  %2246 = getelementptr inbounds nuw <2 x double>, ptr %2245, i64 %2225
  %2247 = load <2 x double>, ptr %2246, align 16, !tbaa !26
  %2248 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2244, <2 x double> %2247, <2 x double> %2243)
  %2249 = fmul <2 x double> %2248, splat (double 5.000000e-01)
  %2250 = icmp eq i64 %2224, 1
  br i1 %2250, label %2266, label %2251

2251:                                             ; preds = %2218
  %2252 = load <2 x double>, ptr %2213, align 16, !tbaa !26
  %2253 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2249, <2 x double> %2252, <2 x double> %2214)
  %2254 = load <2 x double>, ptr %1813, align 16, !tbaa !26
  %2255 = fmul <2 x double> %2196, %2254
  %2256 = load <2 x double>, ptr %1757, align 16, !tbaa !26
  %2257 = load <2 x double>, ptr %1759, align 16, !tbaa !26
  %2258 = load <2 x double>, ptr %1761, align 16, !tbaa !26
  %2259 = load <2 x double>, ptr %1763, align 16, !tbaa !26
  %2260 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2229, <2 x double> %2259, <2 x double> %2258)
  %2261 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2229, <2 x double> %2260, <2 x double> %2257)
  %2262 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2229, <2 x double> %2261, <2 x double> %2256)
  %2263 = fmul <2 x double> %2255, %2262
  %2264 = fsub <2 x double> %2263, %2253
  %2265 = fadd <2 x double> %2253, %2263
  br label %2272

2266:                                             ; preds = %2218
  %2267 = load <2 x double>, ptr %1864, align 16, !tbaa !26
  %2268 = load <2 x double>, ptr %2213, align 16, !tbaa !26
  %2269 = fmul <2 x double> %2249, splat (double -2.000000e+00)
  %2270 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2269, <2 x double> %2268, <2 x double> %2267)
  %2271 = fadd <2 x double> %2191, %2270
  br label %2272

2272:                                             ; preds = %2266, %2251
  %2273 = phi <2 x double> [ %2252, %2251 ], [ %2268, %2266 ]
  %2274 = phi <2 x double> [ %2264, %2251 ], [ %2271, %2266 ]
  %2275 = phi <2 x double> [ %2265, %2251 ], [ %2267, %2266 ]
  %2276 = fsub <2 x double> %2223, %2236
  %2277 = fmul <2 x double> %2237, %2276
  %2278 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2277, <2 x double> %2273, <2 x double> %2219)
  %2279 = fadd <2 x double> %2275, %2278
  %2280 = fneg <2 x double> %2220
  %2281 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2280, <2 x double> %2222, <2 x double> %2279)
  %2282 = fdiv <2 x double> splat (double 1.000000e+00), %2281
  %2283 = load ptr, ptr %2202, align 16, !tbaa !88
  %2284 = getelementptr inbounds nuw <2 x double>, ptr %2283, i64 %2225
  store <2 x double> %2236, ptr %2284, align 16, !tbaa !26
  %2285 = load ptr, ptr %2215, align 8, !tbaa !63
  %2286 = getelementptr inbounds nuw <2 x double>, ptr %2285, i64 %2225
  %2287 = load <2 x double>, ptr %2286, align 16, !tbaa !26
  %2288 = fneg <2 x double> %2287
  %2289 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2220, <2 x double> %2221, <2 x double> %2288)
  %2290 = fmul <2 x double> %2282, %2289
  %2291 = load ptr, ptr %2216, align 16, !tbaa !90
  %2292 = getelementptr inbounds nuw <2 x double>, ptr %2291, i64 %2225
  store <2 x double> %2290, ptr %2292, align 16, !tbaa !26
  %2293 = fmul <2 x double> %2274, %2282
  %2294 = load ptr, ptr %2217, align 8, !tbaa !91
  %2295 = getelementptr inbounds nuw <2 x double>, ptr %2294, i64 %2225
  store <2 x double> %2293, ptr %2295, align 16, !tbaa !26
  %2296 = icmp samesign ugt i64 %2224, 1
  br i1 %2296, label %2218, label %2297, !llvm.loop !92

2297:                                             ; preds = %2272, %2186
  %2298 = load <2 x i64>, ptr %1705, align 16, !tbaa !26
  %2299 = load <2 x double>, ptr %1864, align 16, !tbaa !26
  %2300 = getelementptr inbounds nuw i8, ptr %1489, i64 2288
  %2301 = load ptr, ptr %2300, align 16, !tbaa !90
  %2302 = load <2 x double>, ptr %2301, align 16, !tbaa !26
  %2303 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2299, <2 x double> %2302, <2 x double> %2156)
  %2304 = icmp eq <2 x i64> %2298, zeroinitializer
  %2305 = select <2 x i1> %2304, <2 x double> %2163, <2 x double> %2303
  %2306 = getelementptr inbounds nuw i8, ptr %1489, i64 1552
  store <2 x double> %2305, ptr %2306, align 16, !tbaa !26
  %2307 = getelementptr inbounds nuw i8, ptr %1489, i64 2296
  %2308 = load ptr, ptr %2307, align 8, !tbaa !91
  %2309 = load <2 x double>, ptr %2308, align 16, !tbaa !26
  %2310 = fsub <2 x double> splat (double 1.000000e+00), %2309
  %2311 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2299, <2 x double> %2310, <2 x double> %2158)
  %2312 = select <2 x i1> %2304, <2 x double> %2166, <2 x double> %2311
  br label %2313

2313:                                             ; preds = %2177, %2297
  %2314 = phi <2 x double> [ %2166, %2177 ], [ %2312, %2297 ]
  %2315 = getelementptr inbounds nuw i8, ptr %1489, i64 1568
  store <2 x double> %2314, ptr %2315, align 16, !tbaa !26
  %2316 = add nuw nsw i64 %1487, 1
  %2317 = load i64, ptr %169, align 8, !tbaa !20
  %2318 = icmp slt i64 %2316, %2317
  br i1 %2318, label %1486, label %1483, !llvm.loop !93

2319:                                             ; preds = %2419, %1474, %1483
  %2320 = phi <2 x double> [ %1475, %1474 ], [ %1484, %1483 ], [ %1484, %2419 ]
  %2321 = fcmp ogt <2 x double> %2320, zeroinitializer
  %2322 = bitcast <2 x i1> %2321 to i2
  %2323 = icmp eq i2 %2322, 0
  br i1 %2323, label %2426, label %2423

2324:                                             ; preds = %1483, %2419
  %2325 = phi i64 [ %2420, %2419 ], [ %2317, %1483 ]
  %2326 = phi i64 [ %2421, %2419 ], [ 0, %1483 ]
  %2327 = load ptr, ptr %142, align 8, !tbaa !28
  %2328 = getelementptr inbounds nuw %struct.Piece, ptr %2327, i64 %2326
  %2329 = getelementptr inbounds nuw i8, ptr %2328, i64 2112
  %2330 = load <2 x i64>, ptr %2329, align 16, !tbaa !26
  %2331 = getelementptr inbounds nuw i8, ptr %2328, i64 560
  %2332 = load <2 x double>, ptr %2331, align 16, !tbaa !26
  %2333 = fcmp ogt <2 x double> %2332, zeroinitializer
  %2334 = select <2 x i1> %2333, <2 x i64> %2330, <2 x i64> zeroinitializer
  %2335 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2334)
  %2336 = icmp eq i64 %2335, 0
  br i1 %2336, label %2419, label %2337

2337:                                             ; preds = %2324
  %2338 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %2339 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2338, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2340 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2338, <2 x double> %2339, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2341 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %2342 = getelementptr inbounds nuw i8, ptr %2328, i64 1552
  %2343 = load <2 x double>, ptr %2342, align 16, !tbaa !26
  %2344 = getelementptr inbounds nuw i8, ptr %2328, i64 1568
  %2345 = load <2 x double>, ptr %2344, align 16, !tbaa !26
  %2346 = fdiv <2 x double> %2343, %2345
  %2347 = fcmp olt <2 x double> %2346, %2338
  %2348 = select <2 x i1> %2347, <2 x double> %2346, <2 x double> %2338
  %2349 = getelementptr inbounds nuw i8, ptr %2328, i64 896
  %2350 = load <2 x double>, ptr %2349, align 16, !tbaa !26
  %2351 = fcmp olt <2 x double> %2350, %2348
  %2352 = select <2 x i1> %2351, <2 x double> %2350, <2 x double> %2348
  %2353 = fneg <2 x double> %2345
  %2354 = getelementptr inbounds nuw i8, ptr %2328, i64 1872
  %2355 = load <2 x double>, ptr %2354, align 16, !tbaa !26
  br label %2359

2356:                                             ; preds = %2359
  %2357 = getelementptr inbounds nuw i8, ptr %2328, i64 1584
  store <2 x double> %2410, ptr %2357, align 16, !tbaa !26
  %2358 = load i64, ptr %169, align 8, !tbaa !20
  br label %2419

2359:                                             ; preds = %2337, %2359
  %2360 = phi <2 x i64> [ %2334, %2337 ], [ %2413, %2359 ]
  %2361 = phi i32 [ 0, %2337 ], [ %2414, %2359 ]
  %2362 = phi <2 x double> [ %2352, %2337 ], [ %2410, %2359 ]
  %2363 = fadd <2 x double> %2362, splat (double 2.731500e+02)
  %2364 = fcmp ogt <2 x double> %2362, zeroinitializer
  %2365 = select <2 x i1> %2364, <2 x double> %2362, <2 x double> zeroinitializer
  %2366 = fadd <2 x double> %2365, splat (double 2.731500e+02)
  %2367 = fadd <2 x double> %2366, splat (double 0xC08451671D164BD4)
  %2368 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %2367
  %2369 = fsub <2 x double> %2366, %2368
  %2370 = fadd <2 x double> %2369, splat (double 0x40923C3565924845)
  %2371 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2369, <2 x double> %2370, <2 x double> splat (double 0xC12619EA558539E6))
  %2372 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2369, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %2373 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2369, <2 x double> %2372, <2 x double> splat (double 0xC148A99584203885))
  %2374 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2369, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %2375 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2369, <2 x double> %2374, <2 x double> splat (double 0x4118B9E59F2691E5))
  %2376 = fmul <2 x double> %2375, splat (double 2.000000e+00)
  %2377 = fmul <2 x double> %2371, splat (double 4.000000e+00)
  %2378 = fneg <2 x double> %2375
  %2379 = fmul <2 x double> %2377, %2378
  %2380 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2373, <2 x double> %2373, <2 x double> %2379)
  %2381 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2380)
  %2382 = fsub <2 x double> %2381, %2373
  %2383 = fdiv <2 x double> %2376, %2382
  %2384 = fmul <2 x double> %2383, %2383
  %2385 = fmul <2 x double> %2384, splat (double 1.000000e+06)
  %2386 = fmul <2 x double> %2384, %2385
  %2387 = fmul <2 x double> %2363, splat (double 4.615260e+02)
  %2388 = fdiv <2 x double> %2386, %2387
  %2389 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2353, <2 x double> %2362, <2 x double> %2343)
  %2390 = fsub <2 x double> %2388, %2341
  %2391 = fcmp ogt <2 x double> %2390, zeroinitializer
  %2392 = select <2 x i1> %2391, <2 x double> %2390, <2 x double> zeroinitializer
  %2393 = fmul <2 x double> %2340, %2392
  %2394 = fdiv <2 x double> %2393, %2355
  %2395 = fsub <2 x double> %2389, %2394
  %2396 = fmul <2 x double> %2340, %2388
  %2397 = fdiv <2 x double> %2340, %2387
  %2398 = fadd <2 x double> %2397, splat (double -1.000000e+00)
  %2399 = fmul <2 x double> %2398, %2396
  %2400 = fdiv <2 x double> %2399, %2363
  %2401 = fdiv <2 x double> %2400, %2355
  %2402 = fcmp ule <2 x double> %2388, %2341
  %2403 = select <2 x i1> %2402, <2 x double> zeroinitializer, <2 x double> %2401
  %2404 = fsub <2 x double> %2353, %2403
  %2405 = fdiv <2 x double> %2395, %2404
  %2406 = fsub <2 x double> %2362, %2405
  %2407 = fcmp olt <2 x double> %2406, %2348
  %2408 = select <2 x i1> %2407, <2 x double> %2406, <2 x double> %2348
  %2409 = icmp eq <2 x i64> %2360, zeroinitializer
  %2410 = select <2 x i1> %2409, <2 x double> %2362, <2 x double> %2408
  %2411 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2405)
  %2412 = fcmp oge <2 x double> %2411, splat (double 1.000000e-05)
  %2413 = select <2 x i1> %2412, <2 x i64> %2360, <2 x i64> zeroinitializer
  %2414 = add nuw nsw i32 %2361, 1
  %2415 = icmp samesign ult i32 %2361, 7
  %2416 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2413)
  %2417 = icmp ne i64 %2416, 0
  %2418 = select i1 %2415, i1 %2417, i1 false
  br i1 %2418, label %2359, label %2356, !llvm.loop !94

2419:                                             ; preds = %2324, %2356
  %2420 = phi i64 [ %2325, %2324 ], [ %2358, %2356 ]
  %2421 = add nuw nsw i64 %2326, 1
  %2422 = icmp slt i64 %2421, %2420
  br i1 %2422, label %2324, label %2319, !llvm.loop !95

2423:                                             ; preds = %2319
  %2424 = sext <2 x i1> %2321 to <2 x i64>
  %2425 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, <2 x i64> noundef %2424) #7
  br label %2426

2426:                                             ; preds = %2319, %2423
  %2427 = phi <2 x double> [ %2425, %2423 ], [ zeroinitializer, %2319 ]
  %2428 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %2429 = fcmp ogt <2 x double> %2428, zeroinitializer
  %2430 = sext <2 x i1> %2429 to <2 x i64>
  %2431 = xor <2 x i64> %2430, splat (i64 -1)
  %2432 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %2433 = fcmp oeq <2 x double> %2432, splat (double 1.000000e+00)
  %2434 = fcmp oeq <2 x double> %2432, splat (double 2.000000e+00)
  %2435 = or <2 x i1> %2433, %2434
  %2436 = select <2 x i1> %2435, <2 x i64> %2431, <2 x i64> zeroinitializer
  %2437 = xor <2 x i64> %2436, %2430
  %2438 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %2439 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %2440 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %2441 = icmp eq <2 x i64> %2437, splat (i64 -1)
  %2442 = select <2 x i1> %2441, <2 x double> %2440, <2 x double> %2439
  %2443 = bitcast <2 x i1> %2429 to i2
  %2444 = icmp eq i2 %2443, 0
  br i1 %2444, label %2476, label %2445

2445:                                             ; preds = %2426
  %2446 = select <2 x i1> %2429, <2 x double> %2427, <2 x double> %2442
  %2447 = fmul <2 x double> %2446, splat (double 0x3EB0C6F7A0B5ED8D)
  %2448 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2447)
  %2449 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2448)
  %2450 = fmul <2 x double> %2449, %2449
  %2451 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2449, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2450)
  %2452 = fadd <2 x double> %2451, splat (double 0x402DD4891DBECC6B)
  %2453 = fmul <2 x double> %2449, splat (double 0x40C77A698FD9BCCA)
  %2454 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2450, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2453)
  %2455 = fadd <2 x double> %2454, splat (double 0xC0B2D7440748F0B3)
  %2456 = fmul <2 x double> %2449, splat (double 0xC148A99584203885)
  %2457 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2450, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2456)
  %2458 = fadd <2 x double> %2457, splat (double 0x4118B9E59F2691E5)
  %2459 = fmul <2 x double> %2458, splat (double 2.000000e+00)
  %2460 = fneg <2 x double> %2455
  %2461 = fmul <2 x double> %2452, splat (double 4.000000e+00)
  %2462 = fneg <2 x double> %2458
  %2463 = fmul <2 x double> %2461, %2462
  %2464 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2455, <2 x double> %2455, <2 x double> %2463)
  %2465 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2464)
  %2466 = fsub <2 x double> %2460, %2465
  %2467 = fdiv <2 x double> %2459, %2466
  %2468 = fadd <2 x double> %2467, splat (double 0x408451671D164BD4)
  %2469 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2467, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2470 = fmul <2 x double> %2469, splat (double -4.000000e+00)
  %2471 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2468, <2 x double> %2468, <2 x double> %2470)
  %2472 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2471)
  %2473 = fsub <2 x double> %2468, %2472
  %2474 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2473, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2475 = select <2 x i1> %2429, <2 x double> %2474, <2 x double> %2438
  br label %2476

2476:                                             ; preds = %2445, %2426
  %2477 = phi <2 x double> [ %2446, %2445 ], [ %2442, %2426 ]
  %2478 = phi <2 x double> [ %2475, %2445 ], [ %2438, %2426 ]
  %2479 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %2480 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %2481 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %2482 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %2483 = fmul <2 x double> %2481, %2482
  %2484 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2479, <2 x double> %2480, <2 x double> %2483)
  %2485 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %2486 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %2487 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %2488 = fneg <2 x double> %2484
  %2489 = fmul <2 x double> %2487, %2488
  %2490 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2485, <2 x double> %2486, <2 x double> %2489)
  %2491 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %2492 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2487, <2 x double> %2491, <2 x double> %2485)
  %2493 = fdiv <2 x double> %2490, %2492
  %2494 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2495 = select <2 x i1> %2441, <2 x double> %2494, <2 x double> %2439
  store <2 x double> %2495, ptr %194, align 16, !tbaa !26
  %2496 = load <2 x double>, ptr %195, align 16, !tbaa !26
  %2497 = select <2 x i1> %2441, <2 x double> %2496, <2 x double> %2493
  store <2 x double> %2497, ptr %195, align 16, !tbaa !26
  store <2 x double> %2477, ptr %188, align 16, !tbaa !26
  %2498 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %2499 = and <2 x i64> %2498, %2436
  %2500 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2499)
  %2501 = icmp eq i64 %2500, 0
  br i1 %2501, label %3049, label %2502

2502:                                             ; preds = %2476
  %2503 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %2504 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %2505 = fmul <2 x double> %2481, %2504
  %2506 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2479, <2 x double> %2503, <2 x double> %2505)
  %2507 = load <2 x double>, ptr %198, align 16, !tbaa !26
  %2508 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2509 = fdiv <2 x double> %2507, %2508
  %2510 = fmul <2 x double> %2439, splat (double 3.000000e-01)
  %2511 = load <2 x double>, ptr %200, align 16, !tbaa !26
  %2512 = fadd <2 x double> %2439, %2511
  %2513 = fadd <2 x double> %2512, splat (double 2.000000e+05)
  %2514 = fmul <2 x double> %2508, splat (double 2.870530e+02)
  %2515 = fdiv <2 x double> %2439, %2514
  %2516 = fcmp ogt <2 x double> %2477, %2510
  %2517 = select <2 x i1> %2516, <2 x double> %2477, <2 x double> %2510
  %2518 = fcmp olt <2 x double> %2517, %2513
  %2519 = select <2 x i1> %2518, <2 x double> %2517, <2 x double> %2513
  %2520 = icmp eq <2 x i64> %2436, zeroinitializer
  %2521 = select <2 x i1> %2520, <2 x double> %2477, <2 x double> %2519
  %2522 = fdiv <2 x double> %2495, splat (double 2.870530e+02)
  %2523 = fmul <2 x double> %2515, splat (double 2.000000e+00)
  %2524 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2523)
  br label %2525

2525:                                             ; preds = %2831, %2502
  %2526 = phi <2 x double> [ %2478, %2502 ], [ %2560, %2831 ]
  %2527 = phi <2 x double> [ %2510, %2502 ], [ %2988, %2831 ]
  %2528 = phi <2 x double> [ %2513, %2502 ], [ %2985, %2831 ]
  %2529 = phi <2 x i64> [ %2499, %2502 ], [ %3004, %2831 ]
  %2530 = phi i32 [ 0, %2502 ], [ %3009, %2831 ]
  %2531 = phi <2 x double> [ %2521, %2502 ], [ %3006, %2831 ]
  %2532 = fmul <2 x double> %2531, splat (double 0x3EB0C6F7A0B5ED8D)
  %2533 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2532)
  %2534 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2533)
  %2535 = fmul <2 x double> %2534, %2534
  %2536 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2534, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2535)
  %2537 = fadd <2 x double> %2536, splat (double 0x402DD4891DBECC6B)
  %2538 = fmul <2 x double> %2534, splat (double 0x40C77A698FD9BCCA)
  %2539 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2535, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2538)
  %2540 = fadd <2 x double> %2539, splat (double 0xC0B2D7440748F0B3)
  %2541 = fmul <2 x double> %2534, splat (double 0xC148A99584203885)
  %2542 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2535, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2541)
  %2543 = fadd <2 x double> %2542, splat (double 0x4118B9E59F2691E5)
  %2544 = fmul <2 x double> %2543, splat (double 2.000000e+00)
  %2545 = fneg <2 x double> %2540
  %2546 = fmul <2 x double> %2537, splat (double 4.000000e+00)
  %2547 = fneg <2 x double> %2543
  %2548 = fmul <2 x double> %2546, %2547
  %2549 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2540, <2 x double> %2540, <2 x double> %2548)
  %2550 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2549)
  %2551 = fsub <2 x double> %2545, %2550
  %2552 = fdiv <2 x double> %2544, %2551
  %2553 = fadd <2 x double> %2552, splat (double 0x408451671D164BD4)
  %2554 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2552, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2555 = fmul <2 x double> %2554, splat (double -4.000000e+00)
  %2556 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2553, <2 x double> %2553, <2 x double> %2555)
  %2557 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2556)
  %2558 = fsub <2 x double> %2553, %2557
  %2559 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2558, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2560 = select <2 x i1> %2520, <2 x double> %2526, <2 x double> %2559
  %2561 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2560, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2562 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2560, <2 x double> %2561, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2563 = load i64, ptr %169, align 8, !tbaa !20, !noalias !96
  %2564 = icmp sgt i64 %2563, 0
  br i1 %2564, label %2565, label %2831

2565:                                             ; preds = %2525
  %2566 = fdiv <2 x double> splat (double 1.000000e+00), %2562
  br label %2567

2567:                                             ; preds = %2565, %2748
  %2568 = phi <2 x double> [ zeroinitializer, %2565 ], [ %2827, %2748 ]
  %2569 = phi <2 x double> [ zeroinitializer, %2565 ], [ %2826, %2748 ]
  %2570 = phi i64 [ 0, %2565 ], [ %2828, %2748 ]
  %2571 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !96
  %2572 = getelementptr inbounds nuw %struct.Piece, ptr %2571, i64 %2570
  %2573 = getelementptr inbounds nuw i8, ptr %2572, i64 1552
  %2574 = load <2 x double>, ptr %2573, align 16, !tbaa !26, !noalias !96
  %2575 = getelementptr inbounds nuw i8, ptr %2572, i64 1568
  %2576 = load <2 x double>, ptr %2575, align 16, !tbaa !26, !noalias !96
  %2577 = getelementptr inbounds nuw i8, ptr %2572, i64 1920
  %2578 = load <2 x double>, ptr %2577, align 16, !tbaa !26, !noalias !96
  %2579 = fcmp ule <2 x double> %2578, splat (double 1.000000e+00)
  %2580 = fmul <2 x double> %2560, %2576
  %2581 = fcmp ogt <2 x double> %2574, %2580
  %2582 = and <2 x i1> %2579, %2581
  %2583 = fneg <2 x double> %2576
  %2584 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2583, <2 x double> %2560, <2 x double> %2574)
  %2585 = fmul <2 x double> %2566, %2584
  %2586 = select <2 x i1> %2582, <2 x double> %2585, <2 x double> zeroinitializer
  %2587 = fmul <2 x double> %2566, %2583
  %2588 = fdiv <2 x double> %2574, %2576
  %2589 = select <2 x i1> %2582, <2 x double> %2560, <2 x double> %2588
  %2590 = getelementptr inbounds nuw i8, ptr %2572, i64 2112
  %2591 = load <2 x i64>, ptr %2590, align 16, !tbaa !26, !noalias !96
  %2592 = getelementptr inbounds nuw i8, ptr %2572, i64 560
  %2593 = load <2 x double>, ptr %2592, align 16, !tbaa !26, !noalias !96
  %2594 = fcmp ule <2 x double> %2593, zeroinitializer
  %2595 = xor <2 x i1> %2579, splat (i1 true)
  %2596 = select <2 x i1> %2595, <2 x i1> splat (i1 true), <2 x i1> %2594
  %2597 = getelementptr inbounds nuw i8, ptr %2572, i64 1584
  %2598 = load <2 x double>, ptr %2597, align 16, !tbaa !26, !noalias !96
  %2599 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2583, <2 x double> %2598, <2 x double> %2574)
  %2600 = fcmp ogt <2 x double> %2599, zeroinitializer
  %2601 = select <2 x i1> %2600, <2 x double> %2599, <2 x double> zeroinitializer
  %2602 = fmul <2 x double> %2566, %2601
  %2603 = icmp eq <2 x i64> %2591, zeroinitializer
  %2604 = select <2 x i1> %2596, <2 x i1> splat (i1 true), <2 x i1> %2603
  %2605 = select <2 x i1> %2604, <2 x double> %2586, <2 x double> %2602
  %2606 = select <2 x i1> %2604, <2 x double> %2589, <2 x double> %2598
  %2607 = select <2 x i1> %2604, <2 x i1> %2582, <2 x i1> zeroinitializer
  %2608 = select <2 x i1> %2607, <2 x double> %2587, <2 x double> zeroinitializer
  %2609 = getelementptr inbounds nuw i8, ptr %2572, i64 1968
  %2610 = getelementptr inbounds nuw i8, ptr %2572, i64 2032
  %2611 = load <2 x double>, ptr %2610, align 16, !tbaa !26, !noalias !99
  %2612 = fcmp ole <2 x double> %2560, %2611
  %2613 = getelementptr inbounds nuw i8, ptr %2572, i64 2048
  %2614 = load <2 x double>, ptr %2613, align 16, !tbaa !26, !noalias !99
  %2615 = fcmp oge <2 x double> %2560, %2614
  %2616 = or <2 x i1> %2612, %2615
  %2617 = bitcast <2 x i1> %2616 to i2
  %2618 = icmp eq i2 %2617, 0
  br i1 %2618, label %2619, label %2627

2619:                                             ; preds = %2567
  %2620 = load <2 x double>, ptr %2609, align 16, !tbaa !26, !noalias !99
  %2621 = getelementptr inbounds nuw i8, ptr %2572, i64 1984
  %2622 = load <2 x double>, ptr %2621, align 16, !tbaa !26, !noalias !99
  %2623 = getelementptr inbounds nuw i8, ptr %2572, i64 2016
  %2624 = load <2 x double>, ptr %2623, align 16, !tbaa !26, !noalias !99
  %2625 = getelementptr inbounds nuw i8, ptr %2572, i64 2000
  %2626 = load <2 x double>, ptr %2625, align 16, !tbaa !26, !noalias !99
  br label %2748

2627:                                             ; preds = %2567
  %2628 = load i64, ptr %132, align 16, !tbaa !21, !noalias !102
  %2629 = sitofp i64 %2628 to double
  %2630 = insertelement <2 x double> poison, double %2629, i64 0
  %2631 = shufflevector <2 x double> %2630, <2 x double> poison, <2 x i32> zeroinitializer
  %2632 = icmp sgt i64 %2628, 0
  br i1 %2632, label %2633, label %2723

2633:                                             ; preds = %2627
  %2634 = getelementptr inbounds nuw i8, ptr %2572, i64 2184
  %2635 = load ptr, ptr %2634, align 8, !tbaa !84, !noalias !102
  %2636 = getelementptr inbounds nuw i8, ptr %2572, i64 2192
  %2637 = load ptr, ptr %2636, align 16, !tbaa !85, !noalias !102
  %2638 = getelementptr inbounds nuw i8, ptr %2572, i64 2128
  %2639 = load i64, ptr %2638, align 16, !tbaa !31, !noalias !102
  %2640 = getelementptr inbounds nuw i8, ptr %2572, i64 2208
  %2641 = getelementptr inbounds nuw i8, ptr %2572, i64 2200
  %2642 = getelementptr inbounds nuw i8, ptr %2572, i64 2216
  br label %2643

2643:                                             ; preds = %2633, %2691
  %2644 = phi <2 x i64> [ splat (i64 -1), %2633 ], [ %2663, %2691 ]
  %2645 = phi i64 [ %2628, %2633 ], [ %2653, %2691 ]
  %2646 = phi <2 x double> [ splat (double 1.000000e+09), %2633 ], [ %2706, %2691 ]
  %2647 = phi <2 x double> [ zeroinitializer, %2633 ], [ %2710, %2691 ]
  %2648 = phi <2 x double> [ splat (double 1.000000e+09), %2633 ], [ %2688, %2691 ]
  %2649 = phi <2 x double> [ splat (double 1.000000e+00), %2633 ], [ %2687, %2691 ]
  %2650 = phi <2 x double> [ %2631, %2633 ], [ %2714, %2691 ]
  %2651 = phi <2 x double> [ zeroinitializer, %2633 ], [ %2703, %2691 ]
  %2652 = phi <2 x double> [ zeroinitializer, %2633 ], [ %2701, %2691 ]
  %2653 = add nsw i64 %2645, -1
  %2654 = getelementptr inbounds nuw <2 x double>, ptr %2635, i64 %2653
  %2655 = load <2 x double>, ptr %2654, align 16, !tbaa !26, !noalias !102
  %2656 = getelementptr inbounds nuw <2 x double>, ptr %2637, i64 %2653
  %2657 = load <2 x double>, ptr %2656, align 16, !tbaa !26, !noalias !102
  %2658 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2657, <2 x double> %2560, <2 x double> %2655)
  %2659 = fsub <2 x double> %2658, %2560
  %2660 = fcmp ogt <2 x double> %2659, splat (double 1.000000e-09)
  %2661 = select <2 x i1> %2660, <2 x i64> %2644, <2 x i64> zeroinitializer
  %2662 = icmp sgt i64 %2645, %2639
  %2663 = select i1 %2662, <2 x i64> %2661, <2 x i64> zeroinitializer
  %2664 = icmp slt i64 %2645, %2628
  br i1 %2664, label %2665, label %2677

2665:                                             ; preds = %2643
  %2666 = load ptr, ptr %2640, align 16, !tbaa !82, !noalias !102
  %2667 = getelementptr inbounds nuw <2 x double>, ptr %2666, i64 %2645
  %2668 = load <2 x double>, ptr %2667, align 16, !tbaa !26, !noalias !102
  %2669 = fmul <2 x double> %2659, %2668
  %2670 = icmp eq <2 x i64> %2663, %2644
  %2671 = select <2 x i1> %2670, <2 x double> zeroinitializer, <2 x double> %2669
  %2672 = fadd <2 x double> %2652, %2671
  %2673 = fadd <2 x double> %2657, splat (double -1.000000e+00)
  %2674 = fmul <2 x double> %2673, %2668
  %2675 = select <2 x i1> %2670, <2 x double> zeroinitializer, <2 x double> %2674
  %2676 = fadd <2 x double> %2651, %2675
  br label %2677

2677:                                             ; preds = %2665, %2643
  %2678 = phi <2 x double> [ %2672, %2665 ], [ %2652, %2643 ]
  %2679 = phi <2 x double> [ %2676, %2665 ], [ %2651, %2643 ]
  br i1 %2662, label %2680, label %2686

2680:                                             ; preds = %2677
  %2681 = fneg <2 x double> %2659
  %2682 = icmp eq <2 x i64> %2663, %2644
  %2683 = select <2 x i1> %2682, <2 x double> %2648, <2 x double> %2681
  %2684 = fsub <2 x double> splat (double 1.000000e+00), %2657
  %2685 = select <2 x i1> %2682, <2 x double> %2649, <2 x double> %2684
  br label %2686

2686:                                             ; preds = %2680, %2677
  %2687 = phi <2 x double> [ %2685, %2680 ], [ %2649, %2677 ]
  %2688 = phi <2 x double> [ %2683, %2680 ], [ %2648, %2677 ]
  %2689 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2663)
  %2690 = icmp eq i64 %2689, 0
  br i1 %2690, label %2716, label %2691

2691:                                             ; preds = %2686
  %2692 = load ptr, ptr %2641, align 8, !tbaa !81, !noalias !102
  %2693 = getelementptr inbounds nuw <2 x double>, ptr %2692, i64 %2653
  %2694 = load <2 x double>, ptr %2693, align 16, !tbaa !26, !noalias !102
  %2695 = load ptr, ptr %2642, align 8, !tbaa !83, !noalias !102
  %2696 = getelementptr inbounds nuw <2 x double>, ptr %2695, i64 %2653
  %2697 = load <2 x double>, ptr %2696, align 16, !tbaa !26, !noalias !102
  %2698 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2697, <2 x double> %2560, <2 x double> %2694)
  %2699 = icmp eq <2 x i64> %2663, zeroinitializer
  %2700 = select <2 x i1> %2699, <2 x double> zeroinitializer, <2 x double> %2698
  %2701 = fadd <2 x double> %2678, %2700
  %2702 = select <2 x i1> %2699, <2 x double> zeroinitializer, <2 x double> %2697
  %2703 = fadd <2 x double> %2679, %2702
  %2704 = fcmp olt <2 x double> %2646, %2659
  %2705 = select <2 x i1> %2699, <2 x i1> splat (i1 true), <2 x i1> %2704
  %2706 = select <2 x i1> %2705, <2 x double> %2646, <2 x double> %2659
  %2707 = fsub <2 x double> splat (double 1.000000e+00), %2657
  %2708 = fcmp ogt <2 x double> %2647, %2707
  %2709 = select <2 x i1> %2699, <2 x i1> splat (i1 true), <2 x i1> %2708
  %2710 = select <2 x i1> %2709, <2 x double> %2647, <2 x double> %2707
  %2711 = uitofp nneg i64 %2653 to double
  %2712 = insertelement <2 x double> poison, double %2711, i64 0
  %2713 = shufflevector <2 x double> %2712, <2 x double> poison, <2 x i32> zeroinitializer
  %2714 = select <2 x i1> %2699, <2 x double> %2650, <2 x double> %2713
  %2715 = icmp samesign ugt i64 %2645, 1
  br i1 %2715, label %2643, label %2716, !llvm.loop !105

2716:                                             ; preds = %2686, %2691
  %2717 = phi <2 x double> [ %2714, %2691 ], [ %2650, %2686 ]
  %2718 = phi <2 x double> [ %2710, %2691 ], [ %2647, %2686 ]
  %2719 = phi <2 x double> [ %2706, %2691 ], [ %2646, %2686 ]
  %2720 = phi <2 x double> [ %2701, %2691 ], [ %2678, %2686 ]
  %2721 = phi <2 x double> [ %2703, %2691 ], [ %2679, %2686 ]
  %2722 = fdiv <2 x double> %2688, %2687
  br label %2723

2723:                                             ; preds = %2716, %2627
  %2724 = phi <2 x double> [ %2631, %2627 ], [ %2717, %2716 ]
  %2725 = phi <2 x double> [ zeroinitializer, %2627 ], [ %2718, %2716 ]
  %2726 = phi <2 x double> [ splat (double 1.000000e+09), %2627 ], [ %2719, %2716 ]
  %2727 = phi <2 x double> [ zeroinitializer, %2627 ], [ %2720, %2716 ]
  %2728 = phi <2 x double> [ zeroinitializer, %2627 ], [ %2721, %2716 ]
  %2729 = phi <2 x double> [ splat (double 1.000000e+09), %2627 ], [ %2722, %2716 ]
  %2730 = fsub <2 x double> %2560, %2729
  %2731 = fcmp ogt <2 x double> %2725, splat (double 1.000000e-09)
  %2732 = select <2 x i1> %2731, <2 x double> %2725, <2 x double> splat (double 1.000000e-09)
  %2733 = fdiv <2 x double> %2726, %2732
  %2734 = fadd <2 x double> %2560, %2733
  %2735 = load <2 x double>, ptr %2609, align 16, !tbaa !26, !noalias !99
  %2736 = select <2 x i1> %2616, <2 x double> %2727, <2 x double> %2735
  store <2 x double> %2736, ptr %2609, align 16, !tbaa !26, !noalias !99
  %2737 = getelementptr inbounds nuw i8, ptr %2572, i64 1984
  %2738 = load <2 x double>, ptr %2737, align 16, !tbaa !26, !noalias !99
  %2739 = select <2 x i1> %2616, <2 x double> %2728, <2 x double> %2738
  store <2 x double> %2739, ptr %2737, align 16, !tbaa !26, !noalias !99
  %2740 = getelementptr inbounds nuw i8, ptr %2572, i64 2000
  %2741 = load <2 x double>, ptr %2740, align 16, !tbaa !26, !noalias !99
  %2742 = select <2 x i1> %2616, <2 x double> %2724, <2 x double> %2741
  store <2 x double> %2742, ptr %2740, align 16, !tbaa !26, !noalias !99
  %2743 = getelementptr inbounds nuw i8, ptr %2572, i64 2016
  %2744 = load <2 x double>, ptr %2743, align 16, !tbaa !26, !noalias !99
  %2745 = select <2 x i1> %2616, <2 x double> %2560, <2 x double> %2744
  store <2 x double> %2745, ptr %2743, align 16, !tbaa !26, !noalias !99
  %2746 = select <2 x i1> %2616, <2 x double> %2730, <2 x double> %2611
  store <2 x double> %2746, ptr %2610, align 16, !tbaa !26, !noalias !99
  %2747 = select <2 x i1> %2616, <2 x double> %2734, <2 x double> %2614
  store <2 x double> %2747, ptr %2613, align 16, !tbaa !26, !noalias !99
  br label %2748

2748:                                             ; preds = %2619, %2723
  %2749 = phi <2 x double> [ %2626, %2619 ], [ %2742, %2723 ]
  %2750 = phi <2 x double> [ %2624, %2619 ], [ %2745, %2723 ]
  %2751 = phi <2 x double> [ %2622, %2619 ], [ %2739, %2723 ]
  %2752 = phi <2 x double> [ %2620, %2619 ], [ %2736, %2723 ]
  %2753 = fsub <2 x double> %2560, %2750
  %2754 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2751, <2 x double> %2753, <2 x double> %2752)
  %2755 = getelementptr inbounds nuw i8, ptr %2572, i64 1616
  %2756 = load <2 x double>, ptr %2755, align 16, !tbaa !26, !noalias !96
  %2757 = getelementptr inbounds nuw i8, ptr %2572, i64 1472
  %2758 = load <2 x double>, ptr %2757, align 16, !tbaa !26, !noalias !96
  %2759 = getelementptr inbounds nuw i8, ptr %2572, i64 1856
  %2760 = load <2 x double>, ptr %2759, align 16, !tbaa !26, !noalias !96
  %2761 = fneg <2 x double> %2760
  %2762 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2756, <2 x double> %2758, <2 x double> %2761)
  %2763 = getelementptr inbounds nuw i8, ptr %2572, i64 1840
  %2764 = load <2 x double>, ptr %2763, align 16, !tbaa !26, !noalias !96
  %2765 = fadd <2 x double> %2756, %2764
  %2766 = getelementptr inbounds nuw i8, ptr %2572, i64 2080
  %2767 = load <2 x i64>, ptr %2766, align 16, !tbaa !26, !noalias !96
  %2768 = getelementptr inbounds nuw i8, ptr %2572, i64 2288
  %2769 = load ptr, ptr %2768, align 16, !tbaa !90, !noalias !96
  %2770 = load <2 x double>, ptr %2769, align 16, !tbaa !26, !noalias !96
  %2771 = fmul <2 x double> %2756, %2770
  %2772 = icmp eq <2 x i64> %2767, zeroinitializer
  %2773 = select <2 x i1> %2772, <2 x double> %2762, <2 x double> %2771
  %2774 = getelementptr inbounds nuw i8, ptr %2572, i64 2296
  %2775 = load ptr, ptr %2774, align 8, !tbaa !91, !noalias !96
  %2776 = load <2 x double>, ptr %2775, align 16, !tbaa !26, !noalias !96
  %2777 = fsub <2 x double> splat (double 1.000000e+00), %2776
  %2778 = fmul <2 x double> %2756, %2777
  %2779 = select <2 x i1> %2772, <2 x double> %2765, <2 x double> %2778
  %2780 = fneg <2 x double> %2779
  %2781 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2780, <2 x double> %2560, <2 x double> %2773)
  %2782 = load i64, ptr %132, align 16, !tbaa !21, !noalias !96
  %2783 = sitofp i64 %2782 to double
  %2784 = insertelement <2 x double> poison, double %2783, i64 0
  %2785 = shufflevector <2 x double> %2784, <2 x double> poison, <2 x i32> zeroinitializer
  %2786 = fcmp olt <2 x double> %2749, %2785
  %2787 = and <2 x i1> %2579, %2786
  %2788 = fcmp ogt <2 x double> %2754, zeroinitializer
  %2789 = fcmp oge <2 x double> %2781, zeroinitializer
  %2790 = and <2 x i1> %2788, %2789
  %2791 = and <2 x i1> %2790, %2787
  %2792 = sext <2 x i1> %2791 to <2 x i64>
  %2793 = xor <2 x i64> %2792, splat (i64 -1)
  %2794 = fadd <2 x double> %2754, %2781
  %2795 = fcmp ogt <2 x double> %2794, zeroinitializer
  %2796 = and <2 x i1> %2795, %2787
  %2797 = select <2 x i1> %2796, <2 x i64> %2793, <2 x i64> zeroinitializer
  %2798 = or <2 x i64> %2797, %2792
  %2799 = fmul <2 x double> %2566, %2781
  %2800 = select <2 x i1> %2791, <2 x double> %2799, <2 x double> zeroinitializer
  %2801 = icmp eq <2 x i64> %2798, zeroinitializer
  %2802 = select <2 x i1> %2801, <2 x double> %2605, <2 x double> %2800
  %2803 = select <2 x i1> %2801, <2 x double> %2606, <2 x double> %2560
  %2804 = fsub <2 x double> %2751, %2779
  %2805 = fmul <2 x double> %2566, %2804
  %2806 = select <2 x i1> %2801, <2 x double> %2608, <2 x double> %2805
  %2807 = getelementptr inbounds nuw i8, ptr %2572, i64 1504
  store <2 x double> %2802, ptr %2807, align 16, !tbaa !26, !noalias !96
  %2808 = getelementptr inbounds nuw i8, ptr %2572, i64 1488
  store <2 x double> %2803, ptr %2808, align 16, !tbaa !26, !noalias !96
  %2809 = fmul <2 x double> %2566, %2754
  %2810 = fmul <2 x double> %2566, %2794
  %2811 = icmp eq <2 x i64> %2797, zeroinitializer
  %2812 = select <2 x i1> %2811, <2 x double> zeroinitializer, <2 x double> %2810
  %2813 = select <2 x i1> %2791, <2 x double> %2809, <2 x double> %2812
  %2814 = getelementptr inbounds nuw i8, ptr %2572, i64 1520
  store <2 x double> %2813, ptr %2814, align 16, !tbaa !26, !noalias !96
  %2815 = load i64, ptr %132, align 16, !tbaa !21, !noalias !96
  %2816 = sitofp i64 %2815 to double
  %2817 = insertelement <2 x double> poison, double %2816, i64 0
  %2818 = shufflevector <2 x double> %2817, <2 x double> poison, <2 x i32> zeroinitializer
  %2819 = select <2 x i1> %2801, <2 x double> %2818, <2 x double> %2749
  %2820 = getelementptr inbounds nuw i8, ptr %2572, i64 1536
  store <2 x double> %2819, ptr %2820, align 16, !tbaa !26, !noalias !96
  %2821 = getelementptr inbounds nuw i8, ptr %2572, i64 32
  %2822 = load <2 x double>, ptr %2821, align 16, !tbaa !26, !noalias !96
  %2823 = fadd <2 x double> %2802, %2813
  %2824 = fmul <2 x double> %2822, %2823
  %2825 = fmul <2 x double> %2822, %2806
  %2826 = fadd <2 x double> %2569, %2824
  %2827 = fadd <2 x double> %2568, %2825
  %2828 = add nuw nsw i64 %2570, 1
  %2829 = load i64, ptr %169, align 8, !tbaa !20, !noalias !96
  %2830 = icmp slt i64 %2828, %2829
  br i1 %2830, label %2567, label %2831, !llvm.loop !106

2831:                                             ; preds = %2748, %2525
  %2832 = phi <2 x double> [ zeroinitializer, %2525 ], [ %2826, %2748 ]
  %2833 = phi <2 x double> [ zeroinitializer, %2525 ], [ %2827, %2748 ]
  %2834 = fsub <2 x double> %2531, %2495
  %2835 = fcmp ogt <2 x double> %2834, zeroinitializer
  %2836 = select <2 x i1> %2835, <2 x double> %2834, <2 x double> zeroinitializer
  %2837 = fadd <2 x double> %2560, splat (double 2.731500e+02)
  %2838 = fdiv <2 x double> %2836, splat (double 4.615260e+02)
  %2839 = fadd <2 x double> %2522, %2838
  %2840 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2841 = fdiv <2 x double> %2839, %2840
  %2842 = fmul <2 x double> %2840, %2841
  %2843 = fdiv <2 x double> %2531, %2842
  %2844 = load <2 x double>, ptr %187, align 16, !tbaa !26, !noalias !107
  %2845 = fsub <2 x double> %2531, %2844
  %2846 = load <2 x double>, ptr %200, align 16, !tbaa !26, !noalias !107
  %2847 = fsub <2 x double> %2845, %2846
  %2848 = load <2 x double>, ptr %201, align 16, !tbaa !26, !noalias !107
  %2849 = load <2 x double>, ptr %151, align 16, !tbaa !26, !noalias !107
  %2850 = fcmp une <2 x double> %2849, splat (double 2.000000e+00)
  %2851 = load <2 x double>, ptr %202, align 16, !tbaa !26, !noalias !107
  %2852 = select <2 x i1> %2850, <2 x double> zeroinitializer, <2 x double> %2851
  %2853 = fadd <2 x double> %2848, %2852
  %2854 = fcmp ule <2 x double> %2845, zeroinitializer
  %2855 = fcmp ule <2 x double> %2853, zeroinitializer
  %2856 = or <2 x i1> %2854, %2855
  %2857 = fmul <2 x double> %2841, splat (double 2.000000e+00)
  %2858 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2857)
  %2859 = fmul <2 x double> %2858, %2853
  %2860 = fadd <2 x double> %2845, splat (double 2.000000e+02)
  %2861 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2860)
  %2862 = select <2 x i1> %2854, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2861
  %2863 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2845, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2864 = fmul <2 x double> %2863, %2859
  %2865 = fmul <2 x double> %2862, %2862
  %2866 = fmul <2 x double> %2862, %2865
  %2867 = fdiv <2 x double> %2864, %2866
  %2868 = fmul <2 x double> %2845, %2859
  %2869 = fdiv <2 x double> %2868, %2862
  %2870 = select <2 x i1> %2856, <2 x double> zeroinitializer, <2 x double> %2869
  %2871 = select <2 x i1> %2856, <2 x double> zeroinitializer, <2 x double> %2867
  %2872 = fcmp ule <2 x double> %2847, zeroinitializer
  %2873 = load <2 x double>, ptr %203, align 16, !tbaa !26, !noalias !107
  %2874 = fmul <2 x double> %2847, %2873
  %2875 = select <2 x i1> %2872, <2 x double> zeroinitializer, <2 x double> %2874
  %2876 = fadd <2 x double> %2875, %2870
  %2877 = select <2 x i1> %2872, <2 x double> zeroinitializer, <2 x double> %2873
  %2878 = fadd <2 x double> %2877, %2871
  %2879 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %2880 = fsub <2 x double> %2844, %2531
  %2881 = fcmp ule <2 x double> %2880, zeroinitializer
  %2882 = fcmp ule <2 x double> %2879, zeroinitializer
  %2883 = or <2 x i1> %2881, %2882
  %2884 = fmul <2 x double> %2524, %2879
  %2885 = fadd <2 x double> %2880, splat (double 2.000000e+02)
  %2886 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2885)
  %2887 = select <2 x i1> %2881, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2886
  %2888 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2880, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2889 = fmul <2 x double> %2888, %2884
  %2890 = fmul <2 x double> %2887, %2887
  %2891 = fmul <2 x double> %2887, %2890
  %2892 = fdiv <2 x double> %2889, %2891
  %2893 = fmul <2 x double> %2880, %2884
  %2894 = fdiv <2 x double> %2893, %2887
  %2895 = load <2 x double>, ptr %176, align 16, !tbaa !26, !noalias !110
  %2896 = load <2 x double>, ptr %189, align 16, !tbaa !26, !noalias !110
  %2897 = load <2 x double>, ptr %177, align 16, !tbaa !26, !noalias !110
  %2898 = load <2 x double>, ptr %190, align 16, !tbaa !26, !noalias !110
  %2899 = fmul <2 x double> %2897, %2898
  %2900 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2895, <2 x double> %2896, <2 x double> %2899)
  %2901 = load <2 x double>, ptr %193, align 16, !tbaa !26, !noalias !110
  %2902 = load <2 x double>, ptr %175, align 16, !tbaa !26, !noalias !110
  %2903 = load <2 x double>, ptr %191, align 16, !tbaa !26, !noalias !110
  %2904 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2901, <2 x double> %2902, <2 x double> %2903)
  %2905 = load <2 x double>, ptr %192, align 16, !tbaa !26, !noalias !110
  %2906 = fneg <2 x double> %2900
  %2907 = fmul <2 x double> %2901, %2906
  %2908 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2903, <2 x double> %2905, <2 x double> %2907)
  %2909 = fdiv <2 x double> %2908, %2904
  %2910 = fcmp ogt <2 x double> %2836, splat (double 2.000000e+03)
  %2911 = select <2 x i1> %2910, <2 x double> %2836, <2 x double> splat (double 2.000000e+03)
  %2912 = fmul <2 x double> %2911, splat (double 0x3EB0C6F7A0B5ED8D)
  %2913 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2912)
  %2914 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2913)
  %2915 = fmul <2 x double> %2914, %2914
  %2916 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2914, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2915)
  %2917 = fadd <2 x double> %2916, splat (double 0x402DD4891DBECC6B)
  %2918 = fmul <2 x double> %2914, splat (double 0x40C77A698FD9BCCA)
  %2919 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2915, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2918)
  %2920 = fadd <2 x double> %2919, splat (double 0xC0B2D7440748F0B3)
  %2921 = fmul <2 x double> %2914, splat (double 0xC148A99584203885)
  %2922 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2915, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2921)
  %2923 = fadd <2 x double> %2922, splat (double 0x4118B9E59F2691E5)
  %2924 = fmul <2 x double> %2923, splat (double 2.000000e+00)
  %2925 = fneg <2 x double> %2920
  %2926 = fmul <2 x double> %2917, splat (double 4.000000e+00)
  %2927 = fneg <2 x double> %2923
  %2928 = fmul <2 x double> %2926, %2927
  %2929 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2920, <2 x double> %2920, <2 x double> %2928)
  %2930 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2929)
  %2931 = fsub <2 x double> %2925, %2930
  %2932 = fdiv <2 x double> %2924, %2931
  %2933 = fadd <2 x double> %2932, splat (double 0x408451671D164BD4)
  %2934 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2932, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2935 = fmul <2 x double> %2934, splat (double -4.000000e+00)
  %2936 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2933, <2 x double> %2933, <2 x double> %2935)
  %2937 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2936)
  %2938 = fsub <2 x double> %2933, %2937
  %2939 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2938, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2940 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2939, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2941 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2939, <2 x double> %2940, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2942 = fadd <2 x double> %2939, splat (double 2.731500e+02)
  %2943 = fcmp ule <2 x double> %2939, %2909
  %2944 = load <2 x double>, ptr %205, align 16, !tbaa !26, !noalias !110
  %2945 = fmul <2 x double> %2904, %2944
  %2946 = fadd <2 x double> %2904, %2944
  %2947 = fdiv <2 x double> %2945, %2946
  %2948 = fdiv <2 x double> %2947, %2941
  %2949 = fmul <2 x double> %2942, splat (double 4.615260e+02)
  %2950 = fmul <2 x double> %2911, %2941
  %2951 = fmul <2 x double> %2939, %2944
  %2952 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2909, <2 x double> %2904, <2 x double> %2951)
  %2953 = fdiv <2 x double> %2952, %2946
  %2954 = select <2 x i1> %2943, <2 x double> %2909, <2 x double> %2953
  store <2 x double> %2954, ptr %195, align 16, !tbaa !26, !noalias !110
  %2955 = fsub <2 x double> %2939, %2909
  %2956 = fmul <2 x double> %2955, %2948
  %2957 = select <2 x i1> %2943, <2 x double> zeroinitializer, <2 x double> %2956
  %2958 = fmul <2 x double> %2837, splat (double 4.615260e+02)
  %2959 = fmul <2 x double> %2837, %2958
  %2960 = fmul <2 x double> %2531, %2562
  %2961 = fdiv <2 x double> %2959, %2960
  %2962 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2902, <2 x double> %2531, <2 x double> %2506)
  %2963 = fsub <2 x double> %2832, %2957
  %2964 = fmul <2 x double> %2963, splat (double -4.615260e+02)
  %2965 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2509, <2 x double> %2962, <2 x double> %2964)
  %2966 = fmul <2 x double> %2894, splat (double -2.870530e+02)
  %2967 = select <2 x i1> %2883, <2 x double> splat (double -0.000000e+00), <2 x double> %2966
  %2968 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2843, <2 x double> %2876, <2 x double> %2967)
  %2969 = fadd <2 x double> %2968, %2965
  %2970 = fneg <2 x double> %2942
  %2971 = fmul <2 x double> %2949, %2970
  %2972 = fdiv <2 x double> %2971, %2950
  %2973 = fmul <2 x double> %2972, %2948
  %2974 = select <2 x i1> %2943, <2 x double> splat (double -0.000000e+00), <2 x double> %2973
  %2975 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2833, <2 x double> %2961, <2 x double> %2974)
  %2976 = fmul <2 x double> %2975, splat (double -4.615260e+02)
  %2977 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2509, <2 x double> %2902, <2 x double> %2976)
  %2978 = fmul <2 x double> %2892, splat (double 2.870530e+02)
  %2979 = select <2 x i1> %2883, <2 x double> zeroinitializer, <2 x double> %2978
  %2980 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2843, <2 x double> %2878, <2 x double> %2979)
  %2981 = fadd <2 x double> %2980, %2977
  %2982 = fcmp ule <2 x double> %2969, zeroinitializer
  %2983 = fcmp olt <2 x double> %2528, %2531
  %2984 = select <2 x i1> %2982, <2 x i1> splat (i1 true), <2 x i1> %2983
  %2985 = select <2 x i1> %2984, <2 x double> %2528, <2 x double> %2531
  %2986 = fcmp ogt <2 x double> %2527, %2531
  %2987 = select <2 x i1> %2986, <2 x double> %2527, <2 x double> %2531
  %2988 = select <2 x i1> %2982, <2 x double> %2987, <2 x double> %2527
  %2989 = fdiv <2 x double> %2969, %2981
  %2990 = fsub <2 x double> %2531, %2989
  %2991 = fsub <2 x double> %2990, %2531
  %2992 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2991)
  %2993 = fcmp uge <2 x double> %2992, splat (double 2.000000e-01)
  %2994 = fcmp uge <2 x double> %2988, %2990
  %2995 = fcmp uge <2 x double> %2990, %2985
  %2996 = or <2 x i1> %2994, %2995
  %2997 = and <2 x i1> %2993, %2996
  %2998 = fadd <2 x double> %2988, %2985
  %2999 = fmul <2 x double> %2998, splat (double 5.000000e-01)
  %3000 = select <2 x i1> %2997, <2 x double> %2999, <2 x double> %2990
  %3001 = fsub <2 x double> %3000, %2531
  %3002 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3001)
  %3003 = fcmp oge <2 x double> %3002, splat (double 2.000000e-01)
  %3004 = select <2 x i1> %3003, <2 x i64> %2529, <2 x i64> zeroinitializer
  %3005 = icmp eq <2 x i64> %3004, zeroinitializer
  %3006 = select <2 x i1> %3005, <2 x double> %2531, <2 x double> %3000
  %3007 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3004)
  %3008 = icmp ne i64 %3007, 0
  %3009 = add nuw nsw i32 %2530, 1
  %3010 = icmp samesign ult i32 %2530, 59
  %3011 = select i1 %3008, i1 %3010, i1 false
  br i1 %3011, label %2525, label %3012, !llvm.loop !113

3012:                                             ; preds = %2831
  %3013 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %3014 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %3015 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %3016 = load <2 x double>, ptr %207, align 16, !tbaa !26
  %3017 = fmul <2 x double> %3015, %3016
  %3018 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3013, <2 x double> %3014, <2 x double> %3017)
  %3019 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %3020 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %3021 = fsub <2 x double> %3020, %3006
  %3022 = fcmp ule <2 x double> %3021, zeroinitializer
  %3023 = fcmp ule <2 x double> %3019, zeroinitializer
  %3024 = or <2 x i1> %3023, %3022
  %3025 = fmul <2 x double> %2524, %3019
  %3026 = fadd <2 x double> %3021, splat (double 2.000000e+02)
  %3027 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %3026)
  %3028 = select <2 x i1> %3022, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %3027
  %3029 = fmul <2 x double> %3025, %3021
  %3030 = fdiv <2 x double> %3029, %3028
  %3031 = fmul <2 x double> %3030, splat (double 2.870530e+02)
  %3032 = select <2 x i1> %3024, <2 x double> zeroinitializer, <2 x double> %3031
  %3033 = fdiv <2 x double> %3032, %2509
  %3034 = fsub <2 x double> %3033, %3018
  %3035 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %3036 = load <2 x double>, ptr %198, align 16, !tbaa !26
  %3037 = fmul <2 x double> %2841, %3036
  %3038 = fdiv <2 x double> %2876, %3037
  %3039 = fadd <2 x double> %3035, %3038
  %3040 = fdiv <2 x double> %3034, %3039
  %3041 = fcmp ogt <2 x double> %3040, zeroinitializer
  %3042 = select <2 x i1> %3041, <2 x double> %3040, <2 x double> zeroinitializer
  %3043 = fcmp olt <2 x double> %3042, %3006
  %3044 = select <2 x i1> %3043, <2 x double> %3042, <2 x double> %3006
  %3045 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %3046 = select <2 x i1> %2520, <2 x double> %3045, <2 x double> %3044
  store <2 x double> %3046, ptr %194, align 16, !tbaa !26
  %3047 = select <2 x i1> %2520, <2 x double> %2497, <2 x double> %2954
  store <2 x double> %3047, ptr %195, align 16, !tbaa !26
  store <2 x double> %3006, ptr %188, align 16, !tbaa !26
  store <2 x double> %2560, ptr %208, align 16, !tbaa !26
  %3048 = load i64, ptr %169, align 8, !tbaa !20
  br label %3305

3049:                                             ; preds = %2476
  store <2 x double> %2478, ptr %208, align 16, !tbaa !26
  %3050 = load i64, ptr %169, align 8, !tbaa !20, !noalias !114
  %3051 = icmp sgt i64 %3050, 0
  br i1 %3051, label %3052, label %3308

3052:                                             ; preds = %3049
  %3053 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2478, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3054 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2478, <2 x double> %3053, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3055 = fdiv <2 x double> splat (double 1.000000e+00), %3054
  br label %3056

3056:                                             ; preds = %3052, %3232
  %3057 = phi i64 [ 0, %3052 ], [ %3302, %3232 ]
  %3058 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !114
  %3059 = getelementptr inbounds nuw %struct.Piece, ptr %3058, i64 %3057
  %3060 = getelementptr inbounds nuw i8, ptr %3059, i64 1552
  %3061 = load <2 x double>, ptr %3060, align 16, !tbaa !26, !noalias !114
  %3062 = getelementptr inbounds nuw i8, ptr %3059, i64 1568
  %3063 = load <2 x double>, ptr %3062, align 16, !tbaa !26, !noalias !114
  %3064 = getelementptr inbounds nuw i8, ptr %3059, i64 1920
  %3065 = load <2 x double>, ptr %3064, align 16, !tbaa !26, !noalias !114
  %3066 = fcmp ule <2 x double> %3065, splat (double 1.000000e+00)
  %3067 = fmul <2 x double> %2478, %3063
  %3068 = fcmp ogt <2 x double> %3061, %3067
  %3069 = and <2 x i1> %3066, %3068
  %3070 = fneg <2 x double> %3063
  %3071 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3070, <2 x double> %2478, <2 x double> %3061)
  %3072 = fmul <2 x double> %3055, %3071
  %3073 = select <2 x i1> %3069, <2 x double> %3072, <2 x double> zeroinitializer
  %3074 = fdiv <2 x double> %3061, %3063
  %3075 = select <2 x i1> %3069, <2 x double> %2478, <2 x double> %3074
  %3076 = getelementptr inbounds nuw i8, ptr %3059, i64 2112
  %3077 = load <2 x i64>, ptr %3076, align 16, !tbaa !26, !noalias !114
  %3078 = getelementptr inbounds nuw i8, ptr %3059, i64 560
  %3079 = load <2 x double>, ptr %3078, align 16, !tbaa !26, !noalias !114
  %3080 = fcmp ule <2 x double> %3079, zeroinitializer
  %3081 = xor <2 x i1> %3066, splat (i1 true)
  %3082 = select <2 x i1> %3081, <2 x i1> splat (i1 true), <2 x i1> %3080
  %3083 = getelementptr inbounds nuw i8, ptr %3059, i64 1584
  %3084 = load <2 x double>, ptr %3083, align 16, !tbaa !26, !noalias !114
  %3085 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3070, <2 x double> %3084, <2 x double> %3061)
  %3086 = fcmp ogt <2 x double> %3085, zeroinitializer
  %3087 = select <2 x i1> %3086, <2 x double> %3085, <2 x double> zeroinitializer
  %3088 = fmul <2 x double> %3055, %3087
  %3089 = icmp eq <2 x i64> %3077, zeroinitializer
  %3090 = select <2 x i1> %3082, <2 x i1> splat (i1 true), <2 x i1> %3089
  %3091 = select <2 x i1> %3090, <2 x double> %3073, <2 x double> %3088
  %3092 = select <2 x i1> %3090, <2 x double> %3075, <2 x double> %3084
  %3093 = getelementptr inbounds nuw i8, ptr %3059, i64 1968
  %3094 = getelementptr inbounds nuw i8, ptr %3059, i64 2032
  %3095 = load <2 x double>, ptr %3094, align 16, !tbaa !26, !noalias !117
  %3096 = fcmp ole <2 x double> %2478, %3095
  %3097 = getelementptr inbounds nuw i8, ptr %3059, i64 2048
  %3098 = load <2 x double>, ptr %3097, align 16, !tbaa !26, !noalias !117
  %3099 = fcmp oge <2 x double> %2478, %3098
  %3100 = or <2 x i1> %3096, %3099
  %3101 = bitcast <2 x i1> %3100 to i2
  %3102 = icmp eq i2 %3101, 0
  br i1 %3102, label %3103, label %3111

3103:                                             ; preds = %3056
  %3104 = load <2 x double>, ptr %3093, align 16, !tbaa !26, !noalias !117
  %3105 = getelementptr inbounds nuw i8, ptr %3059, i64 1984
  %3106 = load <2 x double>, ptr %3105, align 16, !tbaa !26, !noalias !117
  %3107 = getelementptr inbounds nuw i8, ptr %3059, i64 2016
  %3108 = load <2 x double>, ptr %3107, align 16, !tbaa !26, !noalias !117
  %3109 = getelementptr inbounds nuw i8, ptr %3059, i64 2000
  %3110 = load <2 x double>, ptr %3109, align 16, !tbaa !26, !noalias !117
  br label %3232

3111:                                             ; preds = %3056
  %3112 = load i64, ptr %132, align 16, !tbaa !21, !noalias !120
  %3113 = sitofp i64 %3112 to double
  %3114 = insertelement <2 x double> poison, double %3113, i64 0
  %3115 = shufflevector <2 x double> %3114, <2 x double> poison, <2 x i32> zeroinitializer
  %3116 = icmp sgt i64 %3112, 0
  br i1 %3116, label %3117, label %3207

3117:                                             ; preds = %3111
  %3118 = getelementptr inbounds nuw i8, ptr %3059, i64 2184
  %3119 = load ptr, ptr %3118, align 8, !tbaa !84, !noalias !120
  %3120 = getelementptr inbounds nuw i8, ptr %3059, i64 2192
  %3121 = load ptr, ptr %3120, align 16, !tbaa !85, !noalias !120
  %3122 = getelementptr inbounds nuw i8, ptr %3059, i64 2128
  %3123 = load i64, ptr %3122, align 16, !tbaa !31, !noalias !120
  %3124 = getelementptr inbounds nuw i8, ptr %3059, i64 2208
  %3125 = getelementptr inbounds nuw i8, ptr %3059, i64 2200
  %3126 = getelementptr inbounds nuw i8, ptr %3059, i64 2216
  br label %3127

3127:                                             ; preds = %3117, %3175
  %3128 = phi <2 x i64> [ splat (i64 -1), %3117 ], [ %3147, %3175 ]
  %3129 = phi i64 [ %3112, %3117 ], [ %3137, %3175 ]
  %3130 = phi <2 x double> [ splat (double 1.000000e+09), %3117 ], [ %3190, %3175 ]
  %3131 = phi <2 x double> [ zeroinitializer, %3117 ], [ %3194, %3175 ]
  %3132 = phi <2 x double> [ splat (double 1.000000e+09), %3117 ], [ %3172, %3175 ]
  %3133 = phi <2 x double> [ splat (double 1.000000e+00), %3117 ], [ %3171, %3175 ]
  %3134 = phi <2 x double> [ %3115, %3117 ], [ %3198, %3175 ]
  %3135 = phi <2 x double> [ zeroinitializer, %3117 ], [ %3187, %3175 ]
  %3136 = phi <2 x double> [ zeroinitializer, %3117 ], [ %3185, %3175 ]
  %3137 = add nsw i64 %3129, -1
  %3138 = getelementptr inbounds nuw <2 x double>, ptr %3119, i64 %3137
  %3139 = load <2 x double>, ptr %3138, align 16, !tbaa !26, !noalias !120
  %3140 = getelementptr inbounds nuw <2 x double>, ptr %3121, i64 %3137
  %3141 = load <2 x double>, ptr %3140, align 16, !tbaa !26, !noalias !120
  %3142 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3141, <2 x double> %2478, <2 x double> %3139)
  %3143 = fsub <2 x double> %3142, %2478
  %3144 = fcmp ogt <2 x double> %3143, splat (double 1.000000e-09)
  %3145 = select <2 x i1> %3144, <2 x i64> %3128, <2 x i64> zeroinitializer
  %3146 = icmp sgt i64 %3129, %3123
  %3147 = select i1 %3146, <2 x i64> %3145, <2 x i64> zeroinitializer
  %3148 = icmp slt i64 %3129, %3112
  br i1 %3148, label %3149, label %3161

3149:                                             ; preds = %3127
  %3150 = load ptr, ptr %3124, align 16, !tbaa !82, !noalias !120
  %3151 = getelementptr inbounds nuw <2 x double>, ptr %3150, i64 %3129
  %3152 = load <2 x double>, ptr %3151, align 16, !tbaa !26, !noalias !120
  %3153 = fmul <2 x double> %3143, %3152
  %3154 = icmp eq <2 x i64> %3147, %3128
  %3155 = select <2 x i1> %3154, <2 x double> zeroinitializer, <2 x double> %3153
  %3156 = fadd <2 x double> %3136, %3155
  %3157 = fadd <2 x double> %3141, splat (double -1.000000e+00)
  %3158 = fmul <2 x double> %3157, %3152
  %3159 = select <2 x i1> %3154, <2 x double> zeroinitializer, <2 x double> %3158
  %3160 = fadd <2 x double> %3135, %3159
  br label %3161

3161:                                             ; preds = %3149, %3127
  %3162 = phi <2 x double> [ %3156, %3149 ], [ %3136, %3127 ]
  %3163 = phi <2 x double> [ %3160, %3149 ], [ %3135, %3127 ]
  br i1 %3146, label %3164, label %3170

3164:                                             ; preds = %3161
  %3165 = fneg <2 x double> %3143
  %3166 = icmp eq <2 x i64> %3147, %3128
  %3167 = select <2 x i1> %3166, <2 x double> %3132, <2 x double> %3165
  %3168 = fsub <2 x double> splat (double 1.000000e+00), %3141
  %3169 = select <2 x i1> %3166, <2 x double> %3133, <2 x double> %3168
  br label %3170

3170:                                             ; preds = %3164, %3161
  %3171 = phi <2 x double> [ %3169, %3164 ], [ %3133, %3161 ]
  %3172 = phi <2 x double> [ %3167, %3164 ], [ %3132, %3161 ]
  %3173 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3147)
  %3174 = icmp eq i64 %3173, 0
  br i1 %3174, label %3200, label %3175

3175:                                             ; preds = %3170
  %3176 = load ptr, ptr %3125, align 8, !tbaa !81, !noalias !120
  %3177 = getelementptr inbounds nuw <2 x double>, ptr %3176, i64 %3137
  %3178 = load <2 x double>, ptr %3177, align 16, !tbaa !26, !noalias !120
  %3179 = load ptr, ptr %3126, align 8, !tbaa !83, !noalias !120
  %3180 = getelementptr inbounds nuw <2 x double>, ptr %3179, i64 %3137
  %3181 = load <2 x double>, ptr %3180, align 16, !tbaa !26, !noalias !120
  %3182 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3181, <2 x double> %2478, <2 x double> %3178)
  %3183 = icmp eq <2 x i64> %3147, zeroinitializer
  %3184 = select <2 x i1> %3183, <2 x double> zeroinitializer, <2 x double> %3182
  %3185 = fadd <2 x double> %3162, %3184
  %3186 = select <2 x i1> %3183, <2 x double> zeroinitializer, <2 x double> %3181
  %3187 = fadd <2 x double> %3163, %3186
  %3188 = fcmp olt <2 x double> %3130, %3143
  %3189 = select <2 x i1> %3183, <2 x i1> splat (i1 true), <2 x i1> %3188
  %3190 = select <2 x i1> %3189, <2 x double> %3130, <2 x double> %3143
  %3191 = fsub <2 x double> splat (double 1.000000e+00), %3141
  %3192 = fcmp ogt <2 x double> %3131, %3191
  %3193 = select <2 x i1> %3183, <2 x i1> splat (i1 true), <2 x i1> %3192
  %3194 = select <2 x i1> %3193, <2 x double> %3131, <2 x double> %3191
  %3195 = uitofp nneg i64 %3137 to double
  %3196 = insertelement <2 x double> poison, double %3195, i64 0
  %3197 = shufflevector <2 x double> %3196, <2 x double> poison, <2 x i32> zeroinitializer
  %3198 = select <2 x i1> %3183, <2 x double> %3134, <2 x double> %3197
  %3199 = icmp samesign ugt i64 %3129, 1
  br i1 %3199, label %3127, label %3200, !llvm.loop !105

3200:                                             ; preds = %3170, %3175
  %3201 = phi <2 x double> [ %3198, %3175 ], [ %3134, %3170 ]
  %3202 = phi <2 x double> [ %3194, %3175 ], [ %3131, %3170 ]
  %3203 = phi <2 x double> [ %3190, %3175 ], [ %3130, %3170 ]
  %3204 = phi <2 x double> [ %3185, %3175 ], [ %3162, %3170 ]
  %3205 = phi <2 x double> [ %3187, %3175 ], [ %3163, %3170 ]
  %3206 = fdiv <2 x double> %3172, %3171
  br label %3207

3207:                                             ; preds = %3200, %3111
  %3208 = phi <2 x double> [ %3115, %3111 ], [ %3201, %3200 ]
  %3209 = phi <2 x double> [ zeroinitializer, %3111 ], [ %3202, %3200 ]
  %3210 = phi <2 x double> [ splat (double 1.000000e+09), %3111 ], [ %3203, %3200 ]
  %3211 = phi <2 x double> [ zeroinitializer, %3111 ], [ %3204, %3200 ]
  %3212 = phi <2 x double> [ zeroinitializer, %3111 ], [ %3205, %3200 ]
  %3213 = phi <2 x double> [ splat (double 1.000000e+09), %3111 ], [ %3206, %3200 ]
  %3214 = fsub <2 x double> %2478, %3213
  %3215 = fcmp ogt <2 x double> %3209, splat (double 1.000000e-09)
  %3216 = select <2 x i1> %3215, <2 x double> %3209, <2 x double> splat (double 1.000000e-09)
  %3217 = fdiv <2 x double> %3210, %3216
  %3218 = fadd <2 x double> %2478, %3217
  %3219 = load <2 x double>, ptr %3093, align 16, !tbaa !26, !noalias !117
  %3220 = select <2 x i1> %3100, <2 x double> %3211, <2 x double> %3219
  store <2 x double> %3220, ptr %3093, align 16, !tbaa !26, !noalias !117
  %3221 = getelementptr inbounds nuw i8, ptr %3059, i64 1984
  %3222 = load <2 x double>, ptr %3221, align 16, !tbaa !26, !noalias !117
  %3223 = select <2 x i1> %3100, <2 x double> %3212, <2 x double> %3222
  store <2 x double> %3223, ptr %3221, align 16, !tbaa !26, !noalias !117
  %3224 = getelementptr inbounds nuw i8, ptr %3059, i64 2000
  %3225 = load <2 x double>, ptr %3224, align 16, !tbaa !26, !noalias !117
  %3226 = select <2 x i1> %3100, <2 x double> %3208, <2 x double> %3225
  store <2 x double> %3226, ptr %3224, align 16, !tbaa !26, !noalias !117
  %3227 = getelementptr inbounds nuw i8, ptr %3059, i64 2016
  %3228 = load <2 x double>, ptr %3227, align 16, !tbaa !26, !noalias !117
  %3229 = select <2 x i1> %3100, <2 x double> %2478, <2 x double> %3228
  store <2 x double> %3229, ptr %3227, align 16, !tbaa !26, !noalias !117
  %3230 = select <2 x i1> %3100, <2 x double> %3214, <2 x double> %3095
  store <2 x double> %3230, ptr %3094, align 16, !tbaa !26, !noalias !117
  %3231 = select <2 x i1> %3100, <2 x double> %3218, <2 x double> %3098
  store <2 x double> %3231, ptr %3097, align 16, !tbaa !26, !noalias !117
  br label %3232

3232:                                             ; preds = %3103, %3207
  %3233 = phi <2 x double> [ %3110, %3103 ], [ %3226, %3207 ]
  %3234 = phi <2 x double> [ %3108, %3103 ], [ %3229, %3207 ]
  %3235 = phi <2 x double> [ %3106, %3103 ], [ %3223, %3207 ]
  %3236 = phi <2 x double> [ %3104, %3103 ], [ %3220, %3207 ]
  %3237 = fsub <2 x double> %2478, %3234
  %3238 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3235, <2 x double> %3237, <2 x double> %3236)
  %3239 = getelementptr inbounds nuw i8, ptr %3059, i64 1616
  %3240 = load <2 x double>, ptr %3239, align 16, !tbaa !26, !noalias !114
  %3241 = getelementptr inbounds nuw i8, ptr %3059, i64 1472
  %3242 = load <2 x double>, ptr %3241, align 16, !tbaa !26, !noalias !114
  %3243 = getelementptr inbounds nuw i8, ptr %3059, i64 1856
  %3244 = load <2 x double>, ptr %3243, align 16, !tbaa !26, !noalias !114
  %3245 = fneg <2 x double> %3244
  %3246 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3240, <2 x double> %3242, <2 x double> %3245)
  %3247 = getelementptr inbounds nuw i8, ptr %3059, i64 1840
  %3248 = load <2 x double>, ptr %3247, align 16, !tbaa !26, !noalias !114
  %3249 = fadd <2 x double> %3240, %3248
  %3250 = getelementptr inbounds nuw i8, ptr %3059, i64 2080
  %3251 = load <2 x i64>, ptr %3250, align 16, !tbaa !26, !noalias !114
  %3252 = getelementptr inbounds nuw i8, ptr %3059, i64 2288
  %3253 = load ptr, ptr %3252, align 16, !tbaa !90, !noalias !114
  %3254 = load <2 x double>, ptr %3253, align 16, !tbaa !26, !noalias !114
  %3255 = fmul <2 x double> %3240, %3254
  %3256 = icmp eq <2 x i64> %3251, zeroinitializer
  %3257 = select <2 x i1> %3256, <2 x double> %3246, <2 x double> %3255
  %3258 = getelementptr inbounds nuw i8, ptr %3059, i64 2296
  %3259 = load ptr, ptr %3258, align 8, !tbaa !91, !noalias !114
  %3260 = load <2 x double>, ptr %3259, align 16, !tbaa !26, !noalias !114
  %3261 = fsub <2 x double> splat (double 1.000000e+00), %3260
  %3262 = fmul <2 x double> %3240, %3261
  %3263 = select <2 x i1> %3256, <2 x double> %3249, <2 x double> %3262
  %3264 = fneg <2 x double> %3263
  %3265 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3264, <2 x double> %2478, <2 x double> %3257)
  %3266 = load i64, ptr %132, align 16, !tbaa !21, !noalias !114
  %3267 = sitofp i64 %3266 to double
  %3268 = insertelement <2 x double> poison, double %3267, i64 0
  %3269 = shufflevector <2 x double> %3268, <2 x double> poison, <2 x i32> zeroinitializer
  %3270 = fcmp olt <2 x double> %3233, %3269
  %3271 = and <2 x i1> %3066, %3270
  %3272 = fcmp ogt <2 x double> %3238, zeroinitializer
  %3273 = fcmp oge <2 x double> %3265, zeroinitializer
  %3274 = and <2 x i1> %3272, %3273
  %3275 = and <2 x i1> %3274, %3271
  %3276 = sext <2 x i1> %3275 to <2 x i64>
  %3277 = xor <2 x i64> %3276, splat (i64 -1)
  %3278 = fadd <2 x double> %3238, %3265
  %3279 = fcmp ogt <2 x double> %3278, zeroinitializer
  %3280 = and <2 x i1> %3279, %3271
  %3281 = select <2 x i1> %3280, <2 x i64> %3277, <2 x i64> zeroinitializer
  %3282 = or <2 x i64> %3281, %3276
  %3283 = fmul <2 x double> %3055, %3265
  %3284 = select <2 x i1> %3275, <2 x double> %3283, <2 x double> zeroinitializer
  %3285 = icmp eq <2 x i64> %3282, zeroinitializer
  %3286 = select <2 x i1> %3285, <2 x double> %3091, <2 x double> %3284
  %3287 = select <2 x i1> %3285, <2 x double> %3092, <2 x double> %2478
  %3288 = getelementptr inbounds nuw i8, ptr %3059, i64 1504
  store <2 x double> %3286, ptr %3288, align 16, !tbaa !26, !noalias !114
  %3289 = getelementptr inbounds nuw i8, ptr %3059, i64 1488
  store <2 x double> %3287, ptr %3289, align 16, !tbaa !26, !noalias !114
  %3290 = fmul <2 x double> %3055, %3238
  %3291 = fmul <2 x double> %3055, %3278
  %3292 = icmp eq <2 x i64> %3281, zeroinitializer
  %3293 = select <2 x i1> %3292, <2 x double> zeroinitializer, <2 x double> %3291
  %3294 = select <2 x i1> %3275, <2 x double> %3290, <2 x double> %3293
  %3295 = getelementptr inbounds nuw i8, ptr %3059, i64 1520
  store <2 x double> %3294, ptr %3295, align 16, !tbaa !26, !noalias !114
  %3296 = load i64, ptr %132, align 16, !tbaa !21, !noalias !114
  %3297 = sitofp i64 %3296 to double
  %3298 = insertelement <2 x double> poison, double %3297, i64 0
  %3299 = shufflevector <2 x double> %3298, <2 x double> poison, <2 x i32> zeroinitializer
  %3300 = select <2 x i1> %3285, <2 x double> %3299, <2 x double> %3233
  %3301 = getelementptr inbounds nuw i8, ptr %3059, i64 1536
  store <2 x double> %3300, ptr %3301, align 16, !tbaa !26, !noalias !114
  %3302 = add nuw nsw i64 %3057, 1
  %3303 = load i64, ptr %169, align 8, !tbaa !20, !noalias !114
  %3304 = icmp slt i64 %3302, %3303
  br i1 %3304, label %3056, label %3305, !llvm.loop !106

3305:                                             ; preds = %3232, %3012
  %3306 = phi i64 [ %3048, %3012 ], [ %3303, %3232 ]
  %3307 = icmp sgt i64 %3306, 0
  br i1 %3307, label %3484, label %3308

3308:                                             ; preds = %3305, %3049
  %3309 = phi i64 [ %3306, %3305 ], [ %3050, %3049 ]
  %3310 = load <2 x double>, ptr %178, align 16, !tbaa !26
  br label %3385

3311:                                             ; preds = %3588
  %3312 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %3313 = icmp sgt i64 %3612, 0
  br i1 %3313, label %3314, label %3385

3314:                                             ; preds = %3311
  %3315 = load ptr, ptr %142, align 8, !tbaa !28
  %3316 = and i64 %3612, 1
  %3317 = icmp eq i64 %3612, 1
  br i1 %3317, label %3361, label %3318

3318:                                             ; preds = %3314
  %3319 = and i64 %3612, 9223372036854775806
  br label %3320

3320:                                             ; preds = %3320, %3318
  %3321 = phi <2 x double> [ zeroinitializer, %3318 ], [ %3352, %3320 ]
  %3322 = phi <2 x double> [ zeroinitializer, %3318 ], [ %3357, %3320 ]
  %3323 = phi i64 [ 0, %3318 ], [ %3358, %3320 ]
  %3324 = phi i64 [ 0, %3318 ], [ %3359, %3320 ]
  %3325 = getelementptr inbounds nuw %struct.Piece, ptr %3315, i64 %3323
  %3326 = getelementptr inbounds nuw i8, ptr %3325, i64 2112
  %3327 = load <2 x i64>, ptr %3326, align 16, !tbaa !26
  %3328 = getelementptr inbounds nuw i8, ptr %3325, i64 32
  %3329 = load <2 x double>, ptr %3328, align 16, !tbaa !26
  %3330 = getelementptr inbounds nuw i8, ptr %3325, i64 1680
  %3331 = load <2 x double>, ptr %3330, align 16, !tbaa !26
  %3332 = fmul <2 x double> %3329, %3331
  %3333 = icmp eq <2 x i64> %3327, zeroinitializer
  %3334 = select <2 x i1> %3333, <2 x double> %3332, <2 x double> zeroinitializer
  %3335 = fadd <2 x double> %3321, %3334
  %3336 = getelementptr inbounds nuw i8, ptr %3325, i64 1648
  %3337 = load <2 x double>, ptr %3336, align 16, !tbaa !26
  %3338 = fmul <2 x double> %3329, %3337
  %3339 = select <2 x i1> %3333, <2 x double> %3338, <2 x double> zeroinitializer
  %3340 = fadd <2 x double> %3322, %3339
  %3341 = or disjoint i64 %3323, 1
  %3342 = getelementptr inbounds nuw %struct.Piece, ptr %3315, i64 %3341
  %3343 = getelementptr inbounds nuw i8, ptr %3342, i64 2112
  %3344 = load <2 x i64>, ptr %3343, align 16, !tbaa !26
  %3345 = getelementptr inbounds nuw i8, ptr %3342, i64 32
  %3346 = load <2 x double>, ptr %3345, align 16, !tbaa !26
  %3347 = getelementptr inbounds nuw i8, ptr %3342, i64 1680
  %3348 = load <2 x double>, ptr %3347, align 16, !tbaa !26
  %3349 = fmul <2 x double> %3346, %3348
  %3350 = icmp eq <2 x i64> %3344, zeroinitializer
  %3351 = select <2 x i1> %3350, <2 x double> %3349, <2 x double> zeroinitializer
  %3352 = fadd <2 x double> %3335, %3351
  %3353 = getelementptr inbounds nuw i8, ptr %3342, i64 1648
  %3354 = load <2 x double>, ptr %3353, align 16, !tbaa !26
  %3355 = fmul <2 x double> %3346, %3354
  %3356 = select <2 x i1> %3350, <2 x double> %3355, <2 x double> zeroinitializer
  %3357 = fadd <2 x double> %3340, %3356
  %3358 = add nuw nsw i64 %3323, 2
  %3359 = add i64 %3324, 2
  %3360 = icmp eq i64 %3359, %3319
  br i1 %3360, label %3361, label %3320, !llvm.loop !123

3361:                                             ; preds = %3320, %3314
  %3362 = phi <2 x double> [ poison, %3314 ], [ %3352, %3320 ]
  %3363 = phi <2 x double> [ poison, %3314 ], [ %3357, %3320 ]
  %3364 = phi <2 x double> [ zeroinitializer, %3314 ], [ %3352, %3320 ]
  %3365 = phi <2 x double> [ zeroinitializer, %3314 ], [ %3357, %3320 ]
  %3366 = phi i64 [ 0, %3314 ], [ %3358, %3320 ]
  %3367 = icmp eq i64 %3316, 0
  br i1 %3367, label %3385, label %3368

3368:                                             ; preds = %3361
  %3369 = getelementptr inbounds nuw %struct.Piece, ptr %3315, i64 %3366
  %3370 = getelementptr inbounds nuw i8, ptr %3369, i64 2112
  %3371 = load <2 x i64>, ptr %3370, align 16, !tbaa !26
  %3372 = getelementptr inbounds nuw i8, ptr %3369, i64 32
  %3373 = load <2 x double>, ptr %3372, align 16, !tbaa !26
  %3374 = getelementptr inbounds nuw i8, ptr %3369, i64 1680
  %3375 = load <2 x double>, ptr %3374, align 16, !tbaa !26
  %3376 = fmul <2 x double> %3373, %3375
  %3377 = icmp eq <2 x i64> %3371, zeroinitializer
  %3378 = select <2 x i1> %3377, <2 x double> %3376, <2 x double> zeroinitializer
  %3379 = fadd <2 x double> %3364, %3378
  %3380 = getelementptr inbounds nuw i8, ptr %3369, i64 1648
  %3381 = load <2 x double>, ptr %3380, align 16, !tbaa !26
  %3382 = fmul <2 x double> %3373, %3381
  %3383 = select <2 x i1> %3377, <2 x double> %3382, <2 x double> zeroinitializer
  %3384 = fadd <2 x double> %3365, %3383
  br label %3385

3385:                                             ; preds = %3368, %3361, %3308, %3311
  %3386 = phi i1 [ false, %3311 ], [ false, %3308 ], [ true, %3361 ], [ true, %3368 ]
  %3387 = phi <2 x double> [ %3312, %3311 ], [ %3310, %3308 ], [ %3312, %3361 ], [ %3312, %3368 ]
  %3388 = phi i64 [ %3612, %3311 ], [ %3309, %3308 ], [ %3612, %3361 ], [ %3612, %3368 ]
  %3389 = phi <2 x double> [ zeroinitializer, %3311 ], [ zeroinitializer, %3308 ], [ %3363, %3361 ], [ %3384, %3368 ]
  %3390 = phi <2 x double> [ zeroinitializer, %3311 ], [ zeroinitializer, %3308 ], [ %3362, %3361 ], [ %3379, %3368 ]
  %3391 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %3392 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %3393 = fsub <2 x double> %3387, %3392
  %3394 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3391, <2 x double> %3393, <2 x double> %3390)
  %3395 = fadd <2 x double> %3389, %3391
  store <2 x double> %3394, ptr %210, align 16, !tbaa !26
  %3396 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %3397 = fcmp ule <2 x double> %3396, zeroinitializer
  %3398 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %3399 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3396, <2 x double> splat (double 5.000000e-01), <2 x double> %3398)
  %3400 = fsub <2 x double> %3399, %3387
  %3401 = fcmp ogt <2 x double> %3396, splat (double 1.000000e-30)
  %3402 = select <2 x i1> %3401, <2 x double> %3396, <2 x double> splat (double 1.000000e-30)
  %3403 = fdiv <2 x double> %3400, %3402
  %3404 = fcmp ogt <2 x double> %3403, zeroinitializer
  %3405 = select <2 x i1> %3404, <2 x double> %3403, <2 x double> zeroinitializer
  %3406 = fcmp olt <2 x double> %3405, splat (double 1.000000e+00)
  %3407 = select <2 x i1> %3406, <2 x double> %3405, <2 x double> splat (double 1.000000e+00)
  %3408 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %3409 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %3410 = icmp eq <2 x i64> %3409, zeroinitializer
  %3411 = select <2 x i1> %3410, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %3412 = select <2 x i1> %3397, <2 x double> %3411, <2 x double> %3407
  %3413 = fmul <2 x double> %3408, %3412
  %3414 = fcmp ule <2 x double> %3413, zeroinitializer
  %3415 = fcmp uge <2 x double> %3413, %3408
  %3416 = or <2 x i1> %3414, %3415
  %3417 = or <2 x i1> %3397, %3416
  %3418 = fdiv <2 x double> %3408, %3402
  %3419 = select <2 x i1> %3417, <2 x double> zeroinitializer, <2 x double> %3418
  %3420 = fadd <2 x double> %3395, %3419
  %3421 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %3422 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %3423 = fdiv <2 x double> splat (double 2.000000e+00), %3422
  %3424 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %3425 = icmp eq <2 x i64> %3421, zeroinitializer
  %3426 = select <2 x i1> %3425, <2 x double> %3424, <2 x double> %3423
  %3427 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %3428 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %3429 = fmul <2 x double> %3427, %3428
  %3430 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %3431 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %3432 = fmul <2 x double> %3431, splat (double 5.000000e-01)
  %3433 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3432, <2 x double> %3427, <2 x double> %3430)
  %3434 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %3435 = fmul <2 x double> %3427, %3434
  %3436 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3429, <2 x double> %3433, <2 x double> %3435)
  %3437 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %3438 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %3439 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %3440 = fmul <2 x double> %3428, %3439
  %3441 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3432, <2 x double> %3439, <2 x double> %3430)
  %3442 = fmul <2 x double> %3434, %3439
  %3443 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3440, <2 x double> %3441, <2 x double> %3442)
  %3444 = fmul <2 x double> %3438, %3443
  %3445 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3437, <2 x double> %3436, <2 x double> %3444)
  %3446 = fmul <2 x double> %3387, %3428
  %3447 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3432, <2 x double> %3387, <2 x double> %3430)
  %3448 = fmul <2 x double> %3387, %3434
  %3449 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3446, <2 x double> %3447, <2 x double> %3448)
  %3450 = fneg <2 x double> %3426
  %3451 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %3452 = fneg <2 x double> %3451
  %3453 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3450, <2 x double> %3436, <2 x double> %3452)
  %3454 = select <2 x i1> %3425, <2 x double> %3445, <2 x double> %3453
  %3455 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3426, <2 x double> %3449, <2 x double> %3454)
  %3456 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3431, <2 x double> %3387, <2 x double> %3430)
  %3457 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3428, <2 x double> %3456, <2 x double> %3434)
  %3458 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %3459 = fcmp une <2 x double> %3458, zeroinitializer
  %3460 = fadd <2 x double> %3394, %3455
  %3461 = fsub <2 x double> %3460, %3413
  %3462 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3426, <2 x double> %3457, <2 x double> %3420)
  %3463 = fdiv <2 x double> %3461, %3462
  %3464 = fsub <2 x double> %3387, %3463
  %3465 = select <2 x i1> %3459, <2 x double> %3387, <2 x double> %3464
  store <2 x double> %3465, ptr %178, align 16, !tbaa !26
  %3466 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %3467 = fneg <2 x double> %3437
  %3468 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3467, <2 x double> %3466, <2 x double> %3413)
  %3469 = load <2 x double>, ptr %212, align 16, !tbaa !26
  %3470 = fneg <2 x double> %3438
  %3471 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3470, <2 x double> %3469, <2 x double> %3468)
  %3472 = fdiv <2 x double> %3471, %3424
  %3473 = load <2 x double>, ptr %213, align 16, !tbaa !26
  %3474 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3467, <2 x double> %3473, <2 x double> %3394)
  %3475 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %3476 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3470, <2 x double> %3475, <2 x double> %3474)
  %3477 = fdiv <2 x double> %3476, %3424
  %3478 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3413, <2 x double> %3422, <2 x double> %3466)
  %3479 = select <2 x i1> %3425, <2 x double> %3472, <2 x double> %3478
  %3480 = load <2 x double>, ptr %215, align 16, !tbaa !26
  %3481 = select <2 x i1> %3459, <2 x double> %3480, <2 x double> %3479
  store <2 x double> %3481, ptr %215, align 16, !tbaa !26
  %3482 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %3483 = select <2 x i1> %3459, <2 x double> %3482, <2 x double> %3477
  store <2 x double> %3483, ptr %216, align 16, !tbaa !26
  br i1 %3386, label %3614, label %3939

3484:                                             ; preds = %3305, %3588
  %3485 = phi i64 [ %3611, %3588 ], [ 0, %3305 ]
  %3486 = load ptr, ptr %142, align 8, !tbaa !28
  %3487 = getelementptr inbounds nuw %struct.Piece, ptr %3486, i64 %3485
  %3488 = getelementptr inbounds nuw i8, ptr %3487, i64 1488
  %3489 = load <2 x double>, ptr %3488, align 16, !tbaa !26
  %3490 = getelementptr inbounds nuw i8, ptr %3487, i64 1536
  %3491 = load <2 x double>, ptr %3490, align 16, !tbaa !26
  %3492 = getelementptr inbounds nuw i8, ptr %3487, i64 2184
  %3493 = load ptr, ptr %3492, align 8, !tbaa !84
  %3494 = getelementptr inbounds nuw i8, ptr %3487, i64 2192
  %3495 = load ptr, ptr %3494, align 16, !tbaa !85
  %3496 = getelementptr inbounds nuw i8, ptr %3487, i64 2136
  %3497 = load ptr, ptr %3496, align 8, !tbaa !58
  %3498 = load i64, ptr %132, align 16, !tbaa !21
  %3499 = icmp sgt i64 %3498, 0
  br i1 %3499, label %3500, label %3520

3500:                                             ; preds = %3484
  %3501 = and i64 %3498, 1
  %3502 = icmp eq i64 %3501, 0
  br i1 %3502, label %3516, label %3503

3503:                                             ; preds = %3500
  %3504 = add nsw i64 %3498, -1
  %3505 = uitofp nneg i64 %3504 to double
  %3506 = insertelement <2 x double> poison, double %3505, i64 0
  %3507 = shufflevector <2 x double> %3506, <2 x double> poison, <2 x i32> zeroinitializer
  %3508 = fcmp ugt <2 x double> %3491, %3507
  %3509 = getelementptr inbounds nuw <2 x double>, ptr %3493, i64 %3504
  %3510 = load <2 x double>, ptr %3509, align 16, !tbaa !26
  %3511 = getelementptr inbounds nuw <2 x double>, ptr %3495, i64 %3504
  %3512 = load <2 x double>, ptr %3511, align 16, !tbaa !26
  %3513 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3512, <2 x double> %3489, <2 x double> %3510)
  %3514 = select <2 x i1> %3508, <2 x double> %3513, <2 x double> %3489
  %3515 = getelementptr inbounds nuw <2 x double>, ptr %3497, i64 %3504
  store <2 x double> %3514, ptr %3515, align 16, !tbaa !26
  br label %3516

3516:                                             ; preds = %3503, %3500
  %3517 = phi <2 x double> [ %3489, %3500 ], [ %3514, %3503 ]
  %3518 = phi i64 [ %3498, %3500 ], [ %3504, %3503 ]
  %3519 = icmp eq i64 %3498, 1
  br i1 %3519, label %3520, label %3535

3520:                                             ; preds = %3516, %3535, %3484
  %3521 = getelementptr inbounds nuw i8, ptr %3487, i64 2080
  %3522 = load <2 x i64>, ptr %3521, align 16, !tbaa !26
  %3523 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3522)
  %3524 = icmp eq i64 %3523, 0
  %3525 = load i64, ptr %133, align 8, !tbaa !22
  %3526 = icmp sgt i64 %3525, 0
  br i1 %3524, label %3532, label %3527

3527:                                             ; preds = %3520
  br i1 %3526, label %3528, label %3588

3528:                                             ; preds = %3527
  %3529 = getelementptr inbounds nuw i8, ptr %3487, i64 2288
  %3530 = getelementptr inbounds nuw i8, ptr %3487, i64 2296
  %3531 = getelementptr inbounds nuw i8, ptr %3487, i64 2256
  br label %3563

3532:                                             ; preds = %3520
  br i1 %3526, label %3533, label %3588

3533:                                             ; preds = %3532
  %3534 = getelementptr inbounds nuw i8, ptr %3487, i64 2256
  br label %3581

3535:                                             ; preds = %3516, %3535
  %3536 = phi <2 x double> [ %3560, %3535 ], [ %3517, %3516 ]
  %3537 = phi i64 [ %3550, %3535 ], [ %3518, %3516 ]
  %3538 = add nsw i64 %3537, -1
  %3539 = uitofp nneg i64 %3538 to double
  %3540 = insertelement <2 x double> poison, double %3539, i64 0
  %3541 = shufflevector <2 x double> %3540, <2 x double> poison, <2 x i32> zeroinitializer
  %3542 = fcmp ugt <2 x double> %3491, %3541
  %3543 = getelementptr inbounds nuw <2 x double>, ptr %3493, i64 %3538
  %3544 = load <2 x double>, ptr %3543, align 16, !tbaa !26
  %3545 = getelementptr inbounds nuw <2 x double>, ptr %3495, i64 %3538
  %3546 = load <2 x double>, ptr %3545, align 16, !tbaa !26
  %3547 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3546, <2 x double> %3536, <2 x double> %3544)
  %3548 = select <2 x i1> %3542, <2 x double> %3547, <2 x double> %3489
  %3549 = getelementptr inbounds nuw <2 x double>, ptr %3497, i64 %3538
  store <2 x double> %3548, ptr %3549, align 16, !tbaa !26
  %3550 = add nsw i64 %3537, -2
  %3551 = uitofp nneg i64 %3550 to double
  %3552 = insertelement <2 x double> poison, double %3551, i64 0
  %3553 = shufflevector <2 x double> %3552, <2 x double> poison, <2 x i32> zeroinitializer
  %3554 = fcmp ugt <2 x double> %3491, %3553
  %3555 = getelementptr inbounds nuw <2 x double>, ptr %3493, i64 %3550
  %3556 = load <2 x double>, ptr %3555, align 16, !tbaa !26
  %3557 = getelementptr inbounds nuw <2 x double>, ptr %3495, i64 %3550
  %3558 = load <2 x double>, ptr %3557, align 16, !tbaa !26
  %3559 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3558, <2 x double> %3548, <2 x double> %3556)
  %3560 = select <2 x i1> %3554, <2 x double> %3559, <2 x double> %3489
  %3561 = getelementptr inbounds nuw <2 x double>, ptr %3497, i64 %3550
  store <2 x double> %3560, ptr %3561, align 16, !tbaa !26
  %3562 = icmp samesign ugt i64 %3538, 1
  br i1 %3562, label %3535, label %3520, !llvm.loop !124

3563:                                             ; preds = %3528, %3563
  %3564 = phi i64 [ 0, %3528 ], [ %3578, %3563 ]
  %3565 = phi <2 x double> [ %3489, %3528 ], [ %3575, %3563 ]
  %3566 = load <2 x i64>, ptr %3521, align 16, !tbaa !26
  %3567 = load ptr, ptr %3529, align 16, !tbaa !90
  %3568 = getelementptr inbounds nuw <2 x double>, ptr %3567, i64 %3564
  %3569 = load <2 x double>, ptr %3568, align 16, !tbaa !26
  %3570 = load ptr, ptr %3530, align 8, !tbaa !91
  %3571 = getelementptr inbounds nuw <2 x double>, ptr %3570, i64 %3564
  %3572 = load <2 x double>, ptr %3571, align 16, !tbaa !26
  %3573 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3572, <2 x double> %3565, <2 x double> %3569)
  %3574 = icmp eq <2 x i64> %3566, zeroinitializer
  %3575 = select <2 x i1> %3574, <2 x double> %3489, <2 x double> %3573
  %3576 = load ptr, ptr %3531, align 16, !tbaa !125
  %3577 = getelementptr inbounds nuw <2 x double>, ptr %3576, i64 %3564
  store <2 x double> %3575, ptr %3577, align 16, !tbaa !26
  %3578 = add nuw nsw i64 %3564, 1
  %3579 = load i64, ptr %133, align 8, !tbaa !22
  %3580 = icmp slt i64 %3578, %3579
  br i1 %3580, label %3563, label %3588, !llvm.loop !126

3581:                                             ; preds = %3533, %3581
  %3582 = phi i64 [ 0, %3533 ], [ %3585, %3581 ]
  %3583 = load ptr, ptr %3534, align 16, !tbaa !125
  %3584 = getelementptr inbounds nuw <2 x double>, ptr %3583, i64 %3582
  store <2 x double> %3489, ptr %3584, align 16, !tbaa !26
  %3585 = add nuw nsw i64 %3582, 1
  %3586 = load i64, ptr %133, align 8, !tbaa !22
  %3587 = icmp slt i64 %3585, %3586
  br i1 %3587, label %3581, label %3588, !llvm.loop !127

3588:                                             ; preds = %3563, %3581, %3527, %3532
  %3589 = phi <2 x double> [ %3489, %3532 ], [ %3489, %3527 ], [ %3489, %3581 ], [ %3575, %3563 ]
  %3590 = load <2 x i64>, ptr %3521, align 16, !tbaa !26
  %3591 = getelementptr inbounds nuw i8, ptr %3487, i64 1664
  %3592 = load <2 x double>, ptr %3591, align 16, !tbaa !26
  %3593 = icmp eq <2 x i64> %3590, zeroinitializer
  %3594 = select <2 x i1> %3593, <2 x double> zeroinitializer, <2 x double> %3592
  %3595 = fsub <2 x double> splat (double 1.000000e+00), %3594
  %3596 = getelementptr inbounds nuw i8, ptr %3487, i64 1472
  %3597 = load <2 x double>, ptr %3596, align 16, !tbaa !26
  %3598 = fmul <2 x double> %3594, %3597
  %3599 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3595, <2 x double> %3589, <2 x double> %3598)
  %3600 = getelementptr inbounds nuw i8, ptr %3487, i64 1712
  store <2 x double> %3599, ptr %3600, align 16, !tbaa !26
  %3601 = getelementptr inbounds nuw i8, ptr %3487, i64 1648
  %3602 = load <2 x double>, ptr %3601, align 16, !tbaa !26
  %3603 = fsub <2 x double> %3597, %3589
  %3604 = fmul <2 x double> %3603, %3602
  %3605 = getelementptr inbounds nuw i8, ptr %3487, i64 1680
  store <2 x double> %3604, ptr %3605, align 16, !tbaa !26
  %3606 = getelementptr inbounds nuw i8, ptr %3487, i64 800
  %3607 = load <2 x double>, ptr %3606, align 16, !tbaa !26
  %3608 = fdiv <2 x double> %3604, %3607
  %3609 = fsub <2 x double> %3597, %3608
  %3610 = getelementptr inbounds nuw i8, ptr %3487, i64 1696
  store <2 x double> %3609, ptr %3610, align 16, !tbaa !26
  %3611 = add nuw nsw i64 %3485, 1
  %3612 = load i64, ptr %169, align 8, !tbaa !20
  %3613 = icmp slt i64 %3611, %3612
  br i1 %3613, label %3484, label %3311, !llvm.loop !128

3614:                                             ; preds = %3385, %3873
  %3615 = phi i64 [ %3936, %3873 ], [ 0, %3385 ]
  %3616 = phi <2 x double> [ %3935, %3873 ], [ zeroinitializer, %3385 ]
  %3617 = load ptr, ptr %142, align 8, !tbaa !28
  %3618 = getelementptr inbounds nuw %struct.Piece, ptr %3617, i64 %3615
  %3619 = getelementptr inbounds nuw i8, ptr %3618, i64 1504
  %3620 = load <2 x double>, ptr %3619, align 16, !tbaa !26
  %3621 = getelementptr inbounds nuw i8, ptr %3618, i64 1520
  %3622 = load <2 x double>, ptr %3621, align 16, !tbaa !26
  %3623 = fadd <2 x double> %3620, %3622
  %3624 = getelementptr inbounds nuw i8, ptr %3618, i64 1488
  %3625 = load <2 x double>, ptr %3624, align 16, !tbaa !26
  %3626 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %3627 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3626, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3628 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3626, <2 x double> %3627, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3629 = getelementptr inbounds nuw i8, ptr %3618, i64 1792
  %3630 = load <2 x double>, ptr %3629, align 16, !tbaa !26
  %3631 = getelementptr inbounds nuw i8, ptr %3618, i64 320
  %3632 = load <2 x double>, ptr %3631, align 16, !tbaa !26
  %3633 = fmul <2 x double> %3630, %3632
  %3634 = getelementptr inbounds nuw i8, ptr %3618, i64 1712
  %3635 = load <2 x double>, ptr %3634, align 16, !tbaa !26
  %3636 = fsub <2 x double> %3635, %3625
  %3637 = fmul <2 x double> %3633, %3636
  %3638 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3628, <2 x double> %3623, <2 x double> %3637)
  %3639 = getelementptr inbounds nuw i8, ptr %3618, i64 1424
  %3640 = load <2 x double>, ptr %3639, align 16, !tbaa !26, !noalias !129
  %3641 = getelementptr inbounds nuw i8, ptr %3618, i64 1040
  %3642 = load <2 x double>, ptr %3641, align 16, !tbaa !26, !noalias !129
  %3643 = fneg <2 x double> %3640
  %3644 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3643, <2 x double> %3642, <2 x double> %3623)
  %3645 = getelementptr inbounds nuw i8, ptr %3618, i64 1440
  %3646 = load <2 x double>, ptr %3645, align 16, !tbaa !26, !noalias !129
  %3647 = getelementptr inbounds nuw i8, ptr %3618, i64 1264
  %3648 = load <2 x double>, ptr %3647, align 16, !tbaa !26, !noalias !129
  %3649 = fneg <2 x double> %3646
  %3650 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3649, <2 x double> %3648, <2 x double> %3644)
  %3651 = getelementptr inbounds nuw i8, ptr %3618, i64 1408
  %3652 = load <2 x double>, ptr %3651, align 16, !tbaa !26, !noalias !129
  %3653 = fdiv <2 x double> %3650, %3652
  %3654 = getelementptr inbounds nuw i8, ptr %3618, i64 400
  %3655 = load <2 x double>, ptr %3654, align 16, !tbaa !26, !noalias !129
  %3656 = fsub <2 x double> %3655, %3653
  %3657 = getelementptr inbounds nuw i8, ptr %3618, i64 1008
  %3658 = load <2 x double>, ptr %3657, align 16, !tbaa !26, !noalias !129
  %3659 = getelementptr inbounds nuw i8, ptr %3618, i64 1888
  %3660 = load <2 x double>, ptr %3659, align 16, !tbaa !26, !noalias !129
  %3661 = fsub <2 x double> %3658, %3660
  %3662 = getelementptr inbounds nuw i8, ptr %3618, i64 976
  %3663 = load <2 x double>, ptr %3662, align 16, !tbaa !26, !noalias !129
  %3664 = getelementptr inbounds nuw i8, ptr %3618, i64 736
  %3665 = load <2 x double>, ptr %3664, align 16, !tbaa !26, !noalias !129
  %3666 = getelementptr inbounds nuw i8, ptr %3618, i64 2080
  %3667 = load <2 x i64>, ptr %3666, align 16, !tbaa !26, !noalias !129
  %3668 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3667)
  %3669 = icmp eq i64 %3668, 0
  br i1 %3669, label %3835, label %3670

3670:                                             ; preds = %3614
  %3671 = fcmp ogt <2 x double> %3661, %3656
  %3672 = getelementptr inbounds nuw i8, ptr %3618, i64 1920
  %3673 = load <2 x double>, ptr %3672, align 16, !tbaa !26, !noalias !129
  %3674 = fcmp oeq <2 x double> %3673, zeroinitializer
  %3675 = select <2 x i1> %3674, <2 x i1> %3671, <2 x i1> zeroinitializer
  %3676 = select <2 x i1> %3675, <2 x i64> %3667, <2 x i64> zeroinitializer
  %3677 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3676)
  %3678 = icmp eq i64 %3677, 0
  br i1 %3678, label %3751, label %3679

3679:                                             ; preds = %3670
  %3680 = fsub <2 x double> %3661, %3656
  %3681 = getelementptr inbounds nuw i8, ptr %3618, i64 208
  %3682 = load <2 x double>, ptr %3681, align 16, !tbaa !26, !noalias !129
  %3683 = fdiv <2 x double> %3680, %3682
  %3684 = getelementptr inbounds nuw i8, ptr %3618, i64 2168
  %3685 = load ptr, ptr %3684, align 8, !tbaa !68, !noalias !129
  %3686 = load i64, ptr %132, align 16, !tbaa !21, !noalias !129
  %3687 = add nsw i64 %3686, -1
  %3688 = getelementptr inbounds <2 x double>, ptr %3685, i64 %3687
  %3689 = load <2 x double>, ptr %3688, align 16, !tbaa !26, !noalias !129
  %3690 = icmp sgt i64 %3686, 1
  br i1 %3690, label %3691, label %3743

3691:                                             ; preds = %3679
  %3692 = getelementptr inbounds nuw i8, ptr %3618, i64 2128
  %3693 = load i64, ptr %3692, align 16, !tbaa !31, !noalias !129
  %3694 = getelementptr inbounds nuw i8, ptr %3618, i64 1168
  %3695 = getelementptr inbounds nuw i8, ptr %3618, i64 384
  %3696 = getelementptr inbounds nuw i8, ptr %3618, i64 2224
  br label %3697

3697:                                             ; preds = %3691, %3740
  %3698 = phi <2 x double> [ %3663, %3691 ], [ %3735, %3740 ]
  %3699 = phi i64 [ %3687, %3691 ], [ %3741, %3740 ]
  %3700 = phi <2 x double> [ %3689, %3691 ], [ %3723, %3740 ]
  %3701 = phi <2 x i64> [ %3676, %3691 ], [ %3727, %3740 ]
  %3702 = phi <2 x double> [ %3683, %3691 ], [ %3734, %3740 ]
  %3703 = icmp slt i64 %3699, %3693
  br i1 %3703, label %3704, label %3710

3704:                                             ; preds = %3697
  %3705 = load ptr, ptr %3696, align 16, !tbaa !73, !noalias !129
  %3706 = getelementptr inbounds nuw <2 x double>, ptr %3705, i64 %3699
  %3707 = load <2 x double>, ptr %3706, align 16, !tbaa !26, !noalias !129
  %3708 = load <2 x double>, ptr %3695, align 16, !tbaa !26, !noalias !129
  %3709 = fmul <2 x double> %3707, %3708
  br label %3718

3710:                                             ; preds = %3697
  %3711 = load <2 x double>, ptr %3694, align 16, !tbaa !26, !noalias !129
  %3712 = load <2 x double>, ptr %3695, align 16, !tbaa !26, !noalias !129
  %3713 = load ptr, ptr %3696, align 16, !tbaa !73, !noalias !129
  %3714 = getelementptr inbounds nuw <2 x double>, ptr %3713, i64 %3699
  %3715 = load <2 x double>, ptr %3714, align 16, !tbaa !26, !noalias !129
  %3716 = fsub <2 x double> %3711, %3712
  %3717 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3715, <2 x double> %3716, <2 x double> %3712)
  br label %3718

3718:                                             ; preds = %3710, %3704
  %3719 = phi <2 x double> [ %3709, %3704 ], [ %3717, %3710 ]
  %3720 = getelementptr inbounds nuw <2 x double>, ptr %3685, i64 %3699
  %3721 = load <2 x double>, ptr %3720, align 16, !tbaa !26, !noalias !129
  %3722 = icmp eq <2 x i64> %3701, zeroinitializer
  %3723 = select <2 x i1> %3722, <2 x double> %3700, <2 x double> %3721
  %3724 = fsub <2 x double> %3698, %3719
  %3725 = fmul <2 x double> %3724, %3723
  %3726 = fcmp olt <2 x double> %3725, %3702
  %3727 = select <2 x i1> %3726, <2 x i64> %3701, <2 x i64> zeroinitializer
  %3728 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3727)
  %3729 = icmp eq i64 %3728, 0
  br i1 %3729, label %3743, label %3730

3730:                                             ; preds = %3718
  %3731 = fneg <2 x double> %3723
  %3732 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3731, <2 x double> %3724, <2 x double> %3702)
  %3733 = icmp eq <2 x i64> %3727, zeroinitializer
  %3734 = select <2 x i1> %3733, <2 x double> %3702, <2 x double> %3732
  %3735 = select <2 x i1> %3733, <2 x double> %3698, <2 x double> %3719
  %3736 = icmp eq i64 %3699, 1
  br i1 %3736, label %3737, label %3740

3737:                                             ; preds = %3730
  %3738 = load <2 x double>, ptr %3685, align 16, !tbaa !26, !noalias !129
  %3739 = select <2 x i1> %3733, <2 x double> %3723, <2 x double> %3738
  br label %3743

3740:                                             ; preds = %3730
  %3741 = add nsw i64 %3699, -1
  %3742 = icmp sgt i64 %3699, 1
  br i1 %3742, label %3697, label %3743, !llvm.loop !74

3743:                                             ; preds = %3740, %3718, %3737, %3679
  %3744 = phi <2 x double> [ %3683, %3679 ], [ %3734, %3737 ], [ %3702, %3718 ], [ %3734, %3740 ]
  %3745 = phi <2 x double> [ %3663, %3679 ], [ %3735, %3737 ], [ %3698, %3718 ], [ %3735, %3740 ]
  %3746 = phi <2 x double> [ %3689, %3679 ], [ %3739, %3737 ], [ %3723, %3718 ], [ %3723, %3740 ]
  %3747 = fdiv <2 x double> %3744, %3746
  %3748 = fsub <2 x double> %3745, %3747
  %3749 = icmp eq <2 x i64> %3676, zeroinitializer
  %3750 = select <2 x i1> %3749, <2 x double> %3663, <2 x double> %3748
  br label %3751

3751:                                             ; preds = %3743, %3670
  %3752 = phi <2 x double> [ %3750, %3743 ], [ %3663, %3670 ]
  %3753 = getelementptr inbounds nuw i8, ptr %3618, i64 640
  %3754 = load <2 x double>, ptr %3753, align 16, !tbaa !26, !noalias !129
  %3755 = getelementptr inbounds nuw i8, ptr %3618, i64 656
  %3756 = load <2 x double>, ptr %3755, align 16, !tbaa !26, !noalias !129
  %3757 = getelementptr inbounds nuw i8, ptr %3618, i64 672
  %3758 = load <2 x double>, ptr %3757, align 16, !tbaa !26, !noalias !129
  %3759 = getelementptr inbounds nuw i8, ptr %3618, i64 688
  %3760 = load <2 x double>, ptr %3759, align 16, !tbaa !26, !noalias !129
  %3761 = load <2 x double>, ptr %3618, align 16, !tbaa !26, !noalias !129
  %3762 = fmul <2 x double> %3761, splat (double 2.000000e-05)
  %3763 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3665, <2 x double> %3760, <2 x double> %3758)
  %3764 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3665, <2 x double> %3763, <2 x double> %3756)
  %3765 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3665, <2 x double> %3764, <2 x double> %3754)
  %3766 = fsub <2 x double> %3765, %3752
  %3767 = fmul <2 x double> %3665, splat (double 3.000000e+00)
  %3768 = fmul <2 x double> %3767, %3760
  %3769 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3758, <2 x double> splat (double 2.000000e+00), <2 x double> %3768)
  %3770 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3665, <2 x double> %3769, <2 x double> %3756)
  %3771 = fdiv <2 x double> %3766, %3770
  %3772 = fsub <2 x double> %3665, %3771
  %3773 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3771)
  %3774 = fcmp oge <2 x double> %3773, %3762
  %3775 = bitcast <2 x i1> %3774 to i2
  %3776 = icmp eq i2 %3775, 0
  br i1 %3776, label %3823, label %3777, !llvm.loop !75

3777:                                             ; preds = %3751
  %3778 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3772, <2 x double> %3760, <2 x double> %3758)
  %3779 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3772, <2 x double> %3778, <2 x double> %3756)
  %3780 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3772, <2 x double> %3779, <2 x double> %3754)
  %3781 = fsub <2 x double> %3780, %3752
  %3782 = fmul <2 x double> %3772, splat (double 3.000000e+00)
  %3783 = fmul <2 x double> %3782, %3760
  %3784 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3758, <2 x double> splat (double 2.000000e+00), <2 x double> %3783)
  %3785 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3772, <2 x double> %3784, <2 x double> %3756)
  %3786 = fdiv <2 x double> %3781, %3785
  %3787 = fsub <2 x double> %3772, %3786
  %3788 = select <2 x i1> %3774, <2 x double> %3787, <2 x double> %3772
  %3789 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3786)
  %3790 = fcmp oge <2 x double> %3789, %3762
  %3791 = and <2 x i1> %3790, %3774
  %3792 = bitcast <2 x i1> %3791 to i2
  %3793 = icmp eq i2 %3792, 0
  br i1 %3793, label %3823, label %3794, !llvm.loop !75

3794:                                             ; preds = %3777
  %3795 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3788, <2 x double> %3760, <2 x double> %3758)
  %3796 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3788, <2 x double> %3795, <2 x double> %3756)
  %3797 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3788, <2 x double> %3796, <2 x double> %3754)
  %3798 = fsub <2 x double> %3797, %3752
  %3799 = fmul <2 x double> %3788, splat (double 3.000000e+00)
  %3800 = fmul <2 x double> %3799, %3760
  %3801 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3758, <2 x double> splat (double 2.000000e+00), <2 x double> %3800)
  %3802 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3788, <2 x double> %3801, <2 x double> %3756)
  %3803 = fdiv <2 x double> %3798, %3802
  %3804 = fsub <2 x double> %3788, %3803
  %3805 = select <2 x i1> %3791, <2 x double> %3804, <2 x double> %3788
  %3806 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3803)
  %3807 = fcmp oge <2 x double> %3806, %3762
  %3808 = and <2 x i1> %3807, %3791
  %3809 = bitcast <2 x i1> %3808 to i2
  %3810 = icmp eq i2 %3809, 0
  br i1 %3810, label %3823, label %3811, !llvm.loop !75

3811:                                             ; preds = %3794
  %3812 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3805, <2 x double> %3760, <2 x double> %3758)
  %3813 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3805, <2 x double> %3812, <2 x double> %3756)
  %3814 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3805, <2 x double> %3813, <2 x double> %3754)
  %3815 = fsub <2 x double> %3814, %3752
  %3816 = fmul <2 x double> %3805, splat (double 3.000000e+00)
  %3817 = fmul <2 x double> %3816, %3760
  %3818 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3758, <2 x double> splat (double 2.000000e+00), <2 x double> %3817)
  %3819 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3805, <2 x double> %3818, <2 x double> %3756)
  %3820 = fdiv <2 x double> %3815, %3819
  %3821 = fsub <2 x double> %3805, %3820
  %3822 = select <2 x i1> %3808, <2 x double> %3821, <2 x double> %3805
  br label %3823

3823:                                             ; preds = %3811, %3794, %3777, %3751
  %3824 = phi <2 x double> [ %3772, %3751 ], [ %3788, %3777 ], [ %3805, %3794 ], [ %3822, %3811 ]
  %3825 = fmul <2 x double> %3761, splat (double 2.800000e-01)
  %3826 = fcmp ogt <2 x double> %3824, %3825
  %3827 = select <2 x i1> %3826, <2 x double> %3824, <2 x double> %3825
  %3828 = fcmp olt <2 x double> %3827, %3761
  %3829 = select <2 x i1> %3828, <2 x double> %3827, <2 x double> %3761
  %3830 = icmp eq <2 x i64> %3667, zeroinitializer
  %3831 = select <2 x i1> %3830, <2 x double> %3665, <2 x double> %3829
  %3832 = fcmp olt <2 x double> %3661, %3656
  %3833 = select <2 x i1> %3830, <2 x i1> splat (i1 true), <2 x i1> %3832
  %3834 = select <2 x i1> %3833, <2 x double> %3661, <2 x double> %3656
  br label %3835

3835:                                             ; preds = %3823, %3614
  %3836 = phi <2 x double> [ %3834, %3823 ], [ %3661, %3614 ]
  %3837 = phi <2 x double> [ %3831, %3823 ], [ %3665, %3614 ]
  %3838 = phi <2 x double> [ %3752, %3823 ], [ %3663, %3614 ]
  %3839 = fsub <2 x double> %3656, %3836
  %3840 = fsub <2 x double> %3837, %3665
  %3841 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3840)
  %3842 = getelementptr inbounds nuw i8, ptr %3618, i64 768
  %3843 = load <2 x double>, ptr %3842, align 16, !tbaa !26
  %3844 = fsub <2 x double> %3839, %3843
  %3845 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3844)
  %3846 = getelementptr inbounds nuw i8, ptr %3618, i64 208
  %3847 = load <2 x double>, ptr %3846, align 16, !tbaa !26
  %3848 = fdiv <2 x double> %3845, %3847
  %3849 = icmp eq <2 x i64> %3667, zeroinitializer
  %3850 = select <2 x i1> %3849, <2 x double> %3848, <2 x double> %3841
  br i1 %3669, label %3873, label %3851

3851:                                             ; preds = %3835
  %3852 = getelementptr inbounds nuw i8, ptr %3618, i64 1776
  %3853 = load <2 x double>, ptr %3852, align 16, !tbaa !26
  %3854 = fmul <2 x double> %3853, splat (double 2.000000e+00)
  %3855 = getelementptr inbounds nuw i8, ptr %3618, i64 96
  %3856 = load <2 x double>, ptr %3855, align 16, !tbaa !26
  %3857 = getelementptr inbounds nuw i8, ptr %3618, i64 112
  %3858 = load <2 x double>, ptr %3857, align 16, !tbaa !26
  %3859 = getelementptr inbounds nuw i8, ptr %3618, i64 128
  %3860 = load <2 x double>, ptr %3859, align 16, !tbaa !26
  %3861 = fmul <2 x double> %3625, %3860
  %3862 = fmul <2 x double> %3861, splat (double 0x3FD5555555555555)
  %3863 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3858, <2 x double> splat (double 5.000000e-01), <2 x double> %3862)
  %3864 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3625, <2 x double> %3863, <2 x double> %3856)
  %3865 = fmul <2 x double> %3625, %3864
  %3866 = getelementptr inbounds nuw i8, ptr %3618, i64 192
  %3867 = load <2 x double>, ptr %3866, align 16, !tbaa !26
  %3868 = fneg <2 x double> %3867
  %3869 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3868, <2 x double> %3625, <2 x double> %3865)
  %3870 = fmul <2 x double> %3854, %3869
  %3871 = fsub <2 x double> %3638, %3870
  %3872 = select <2 x i1> %3849, <2 x double> %3638, <2 x double> %3871
  br label %3873

3873:                                             ; preds = %3835, %3851
  %3874 = phi <2 x double> [ %3872, %3851 ], [ %3638, %3835 ]
  %3875 = getelementptr inbounds nuw i8, ptr %3618, i64 816
  store <2 x double> %3653, ptr %3875, align 16, !tbaa !26
  store <2 x double> %3839, ptr %3842, align 16, !tbaa !26
  %3876 = getelementptr inbounds nuw i8, ptr %3618, i64 784
  store <2 x double> %3836, ptr %3876, align 16, !tbaa !26
  %3877 = getelementptr inbounds nuw i8, ptr %3618, i64 752
  %3878 = load <2 x double>, ptr %3877, align 16, !tbaa !26
  %3879 = select <2 x i1> %3849, <2 x double> %3878, <2 x double> %3838
  store <2 x double> %3879, ptr %3877, align 16, !tbaa !26
  %3880 = select <2 x i1> %3849, <2 x double> %3665, <2 x double> %3837
  store <2 x double> %3880, ptr %3664, align 16, !tbaa !26
  %3881 = getelementptr inbounds nuw i8, ptr %3618, i64 880
  store <2 x double> %3622, ptr %3881, align 16, !tbaa !26
  %3882 = getelementptr inbounds nuw i8, ptr %3618, i64 896
  store <2 x double> %3625, ptr %3882, align 16, !tbaa !26
  %3883 = getelementptr inbounds nuw i8, ptr %3618, i64 800
  %3884 = load <2 x double>, ptr %3883, align 16, !tbaa !26
  %3885 = getelementptr inbounds nuw i8, ptr %3618, i64 1472
  %3886 = load <2 x double>, ptr %3885, align 16, !tbaa !26
  %3887 = fsub <2 x double> %3886, %3625
  %3888 = getelementptr inbounds nuw i8, ptr %3618, i64 2064
  %3889 = load <2 x double>, ptr %3888, align 16, !tbaa !26
  %3890 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3884, <2 x double> %3889, <2 x double> splat (double 1.000000e+00))
  %3891 = fdiv <2 x double> %3887, %3890
  %3892 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3625, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3893 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3625, <2 x double> %3892, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3894 = fneg <2 x double> %3620
  %3895 = fmul <2 x double> %3893, %3894
  %3896 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3884, <2 x double> %3891, <2 x double> %3895)
  %3897 = getelementptr inbounds nuw i8, ptr %3618, i64 864
  store <2 x double> %3896, ptr %3897, align 16, !tbaa !26
  %3898 = getelementptr inbounds nuw i8, ptr %3618, i64 1696
  %3899 = load <2 x double>, ptr %3898, align 16, !tbaa !26
  %3900 = fsub <2 x double> %3886, %3899
  %3901 = fsub <2 x double> %3900, %3891
  %3902 = getelementptr inbounds nuw i8, ptr %3618, i64 912
  store <2 x double> %3901, ptr %3902, align 16, !tbaa !26
  %3903 = getelementptr inbounds nuw i8, ptr %3618, i64 1840
  %3904 = load <2 x double>, ptr %3903, align 16, !tbaa !26
  %3905 = getelementptr inbounds nuw i8, ptr %3618, i64 1856
  %3906 = load <2 x double>, ptr %3905, align 16, !tbaa !26
  %3907 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3904, <2 x double> %3625, <2 x double> %3906)
  %3908 = getelementptr inbounds nuw i8, ptr %3618, i64 1680
  %3909 = load <2 x double>, ptr %3908, align 16, !tbaa !26
  %3910 = getelementptr inbounds nuw i8, ptr %3618, i64 1056
  %3911 = load <2 x double>, ptr %3910, align 16, !tbaa !26
  %3912 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3643, <2 x double> %3911, <2 x double> %3909)
  %3913 = getelementptr inbounds nuw i8, ptr %3618, i64 1280
  %3914 = load <2 x double>, ptr %3913, align 16, !tbaa !26
  %3915 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3649, <2 x double> %3914, <2 x double> %3912)
  %3916 = fdiv <2 x double> %3915, %3652
  %3917 = getelementptr inbounds nuw i8, ptr %3618, i64 832
  store <2 x double> %3916, ptr %3917, align 16, !tbaa !26
  %3918 = getelementptr inbounds nuw i8, ptr %3618, i64 1072
  %3919 = load <2 x double>, ptr %3918, align 16, !tbaa !26
  %3920 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3643, <2 x double> %3919, <2 x double> %3874)
  %3921 = getelementptr inbounds nuw i8, ptr %3618, i64 1296
  %3922 = load <2 x double>, ptr %3921, align 16, !tbaa !26
  %3923 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3649, <2 x double> %3922, <2 x double> %3920)
  %3924 = fdiv <2 x double> %3923, %3652
  %3925 = getelementptr inbounds nuw i8, ptr %3618, i64 848
  store <2 x double> %3924, ptr %3925, align 16, !tbaa !26
  %3926 = getelementptr inbounds nuw i8, ptr %3618, i64 1152
  %3927 = load <2 x double>, ptr %3926, align 16, !tbaa !26
  %3928 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3643, <2 x double> %3927, <2 x double> %3907)
  %3929 = getelementptr inbounds nuw i8, ptr %3618, i64 1376
  %3930 = load <2 x double>, ptr %3929, align 16, !tbaa !26
  %3931 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3649, <2 x double> %3930, <2 x double> %3928)
  %3932 = fdiv <2 x double> %3931, %3652
  %3933 = getelementptr inbounds nuw i8, ptr %3618, i64 928
  store <2 x double> %3932, ptr %3933, align 16, !tbaa !26
  %3934 = fcmp ogt <2 x double> %3616, %3850
  %3935 = select <2 x i1> %3934, <2 x double> %3616, <2 x double> %3850
  %3936 = add nuw nsw i64 %3615, 1
  %3937 = load i64, ptr %169, align 8, !tbaa !20
  %3938 = icmp slt i64 %3936, %3937
  br i1 %3938, label %3614, label %3939, !llvm.loop !132

3939:                                             ; preds = %3873, %3385
  %3940 = phi <2 x double> [ zeroinitializer, %3385 ], [ %3935, %3873 ]
  %3941 = phi i64 [ %3388, %3385 ], [ %3937, %3873 ]
  %3942 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %3943 = fadd <2 x double> %3942, splat (double 1.000000e+00)
  store <2 x double> %3943, ptr %182, align 16, !tbaa !26
  %3944 = icmp sgt i64 %3941, 0
  br i1 %3944, label %3945, label %3951

3945:                                             ; preds = %3939
  %3946 = load ptr, ptr %142, align 8, !tbaa !28
  %3947 = load i64, ptr %132, align 16, !tbaa !21
  %3948 = add nsw i64 %3947, -1
  br label %3973

3949:                                             ; preds = %3999
  %3950 = fcmp oeq <2 x double> %4014, zeroinitializer
  br label %3951

3951:                                             ; preds = %3949, %3939
  %3952 = phi <2 x i1> [ splat (i1 true), %3939 ], [ %3950, %3949 ]
  %3953 = load i64, ptr %217, align 16, !tbaa !24
  %3954 = sitofp i64 %3953 to double
  %3955 = insertelement <2 x double> poison, double %3954, i64 0
  %3956 = shufflevector <2 x double> %3955, <2 x double> poison, <2 x i32> zeroinitializer
  %3957 = fcmp oge <2 x double> %3943, %3956
  %3958 = and <2 x i1> %3952, %3957
  %3959 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %3960 = load <2 x double>, ptr %218, align 16, !tbaa !26
  %3961 = fcmp olt <2 x double> %3940, %3960
  %3962 = or <2 x i1> %3961, %3958
  %3963 = fcmp oge <2 x double> %3943, splat (double 2.000000e+01)
  %3964 = or <2 x i1> %3963, %3962
  %3965 = select <2 x i1> %3964, <2 x i64> %3959, <2 x i64> zeroinitializer
  store <2 x i64> %3965, ptr %146, align 16, !tbaa !26
  %3966 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3965)
  %3967 = icmp eq i64 %3966, 0
  br i1 %3967, label %528, label %3968, !llvm.loop !55

3968:                                             ; preds = %3951
  %3969 = load i64, ptr %169, align 8, !tbaa !20
  %3970 = icmp sgt i64 %3969, 0
  br i1 %3970, label %3971, label %4017

3971:                                             ; preds = %3968
  %3972 = icmp eq <2 x i64> %3965, zeroinitializer
  br label %4339

3973:                                             ; preds = %3945, %3999
  %3974 = phi i64 [ 0, %3945 ], [ %4015, %3999 ]
  %3975 = phi <2 x double> [ zeroinitializer, %3945 ], [ %4014, %3999 ]
  %3976 = getelementptr inbounds nuw %struct.Piece, ptr %3946, i64 %3974
  %3977 = getelementptr inbounds nuw i8, ptr %3976, i64 2128
  %3978 = load i64, ptr %3977, align 16, !tbaa !31
  %3979 = icmp sgt i64 %3947, %3978
  br i1 %3979, label %3988, label %3980

3980:                                             ; preds = %3973
  %3981 = getelementptr inbounds nuw i8, ptr %3976, i64 2224
  %3982 = load ptr, ptr %3981, align 16, !tbaa !73
  %3983 = getelementptr inbounds <2 x double>, ptr %3982, i64 %3948
  %3984 = load <2 x double>, ptr %3983, align 16, !tbaa !26
  %3985 = getelementptr inbounds nuw i8, ptr %3976, i64 384
  %3986 = load <2 x double>, ptr %3985, align 16, !tbaa !26
  %3987 = fmul <2 x double> %3984, %3986
  br label %3999

3988:                                             ; preds = %3973
  %3989 = getelementptr inbounds nuw i8, ptr %3976, i64 944
  %3990 = load <2 x double>, ptr %3989, align 16, !tbaa !26
  %3991 = getelementptr inbounds nuw i8, ptr %3976, i64 384
  %3992 = load <2 x double>, ptr %3991, align 16, !tbaa !26
  %3993 = getelementptr inbounds nuw i8, ptr %3976, i64 2224
  %3994 = load ptr, ptr %3993, align 16, !tbaa !73
  %3995 = getelementptr inbounds <2 x double>, ptr %3994, i64 %3948
  %3996 = load <2 x double>, ptr %3995, align 16, !tbaa !26
  %3997 = fsub <2 x double> %3990, %3992
  %3998 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3996, <2 x double> %3997, <2 x double> %3992)
  br label %3999

3999:                                             ; preds = %3980, %3988
  %4000 = phi <2 x double> [ %3987, %3980 ], [ %3998, %3988 ]
  %4001 = getelementptr inbounds nuw i8, ptr %3976, i64 2080
  %4002 = load <2 x i64>, ptr %4001, align 16, !tbaa !26
  %4003 = getelementptr inbounds nuw i8, ptr %3976, i64 1920
  %4004 = load <2 x double>, ptr %4003, align 16, !tbaa !26
  %4005 = fcmp une <2 x double> %4004, zeroinitializer
  %4006 = getelementptr inbounds nuw i8, ptr %3976, i64 752
  %4007 = load <2 x double>, ptr %4006, align 16, !tbaa !26
  %4008 = fcmp uge <2 x double> %4007, %4000
  %4009 = select <2 x i1> %4008, <2 x i1> splat (i1 true), <2 x i1> %4005
  %4010 = icmp eq <2 x i64> %4002, zeroinitializer
  %4011 = select <2 x i1> %4009, <2 x i1> splat (i1 true), <2 x i1> %4010
  %4012 = select <2 x i1> %4011, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %4013 = fcmp ogt <2 x double> %3975, %4012
  %4014 = select <2 x i1> %4013, <2 x double> %3975, <2 x double> %4012
  %4015 = add nuw nsw i64 %3974, 1
  %4016 = icmp eq i64 %4015, %3941
  br i1 %4016, label %3949, label %3973, !llvm.loop !133

4017:                                             ; preds = %4387, %3968
  %4018 = phi i64 [ %3969, %3968 ], [ %4393, %4387 ]
  %4019 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4020 = fadd <2 x double> %4019, splat (double 1.000000e+00)
  %4021 = icmp eq <2 x i64> %3965, zeroinitializer
  %4022 = select <2 x i1> %4021, <2 x double> %4019, <2 x double> %4020
  store <2 x double> %4022, ptr %174, align 16, !tbaa !26
  %4023 = fcmp ogt <2 x double> %4022, splat (double 4.000000e+01)
  %4024 = select <2 x i1> %4023, <2 x i64> %3965, <2 x i64> zeroinitializer
  %4025 = xor <2 x i64> %4024, %3965
  %4026 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %4027 = fadd <2 x double> %4026, splat (double 1.000000e+00)
  %4028 = icmp eq <2 x i64> %4024, zeroinitializer
  %4029 = select <2 x i1> %4028, <2 x double> %4026, <2 x double> %4027
  store <2 x double> %4029, ptr %140, align 16, !tbaa !26
  %4030 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %4031 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %4032 = fsub <2 x double> %4030, %4031
  %4033 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4032)
  %4034 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4035 = fmul <2 x double> %4034, splat (double 1.500000e+00)
  %4036 = fcmp ogt <2 x double> %4033, %4035
  %4037 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4038 = fcmp ogt <2 x double> %4037, splat (double 2.000000e-03)
  %4039 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4040 = fcmp oeq <2 x double> %4039, zeroinitializer
  %4041 = and <2 x i1> %4036, %4040
  %4042 = and <2 x i1> %4038, %4041
  %4043 = fdiv <2 x double> %4034, %4033
  %4044 = select <2 x i1> %4042, <2 x i64> %4025, <2 x i64> zeroinitializer
  %4045 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %4046 = fcmp ogt <2 x double> %4045, %4037
  %4047 = select <2 x i1> %4046, <2 x double> %4045, <2 x double> %4037
  %4048 = select <2 x i1> %4042, <2 x double> zeroinitializer, <2 x double> %4047
  %4049 = icmp eq <2 x i64> %4044, zeroinitializer
  %4050 = select <2 x i1> %4049, <2 x double> %4045, <2 x double> %4048
  store <2 x double> %4050, ptr %172, align 16, !tbaa !26
  %4051 = fcmp ogt <2 x double> %4043, splat (double 5.000000e-02)
  %4052 = select <2 x i1> %4051, <2 x double> %4043, <2 x double> splat (double 5.000000e-02)
  %4053 = fcmp olt <2 x double> %4052, splat (double 0x3FEE666666666666)
  %4054 = select <2 x i1> %4053, <2 x double> %4052, <2 x double> splat (double 0x3FEE666666666666)
  %4055 = fmul <2 x double> %4037, %4054
  %4056 = fcmp ogt <2 x double> %4055, splat (double 0x3EB0C6F7A0B5ED8D)
  %4057 = select <2 x i1> %4056, <2 x double> %4055, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4058 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %4059 = select <2 x i1> %4049, <2 x double> %4058, <2 x double> %4057
  store <2 x double> %4059, ptr %152, align 16, !tbaa !26
  %4060 = load <2 x double>, ptr %137, align 16, !tbaa !26
  %4061 = fadd <2 x double> %4060, splat (double 1.000000e+00)
  %4062 = select <2 x i1> %4049, <2 x double> %4060, <2 x double> %4061
  store <2 x double> %4062, ptr %137, align 16, !tbaa !26
  %4063 = xor <2 x i64> %4044, %4025
  %4064 = icmp sgt i64 %4018, 0
  br i1 %4064, label %4065, label %4164

4065:                                             ; preds = %4017
  %4066 = load ptr, ptr %142, align 8, !tbaa !28
  %4067 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4068 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %4069 = fcmp une <2 x double> %4067, %4068
  %4070 = fcmp ule <2 x double> %4067, zeroinitializer
  %4071 = or <2 x i1> %4070, %4069
  %4072 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4073 = fcmp ogt <2 x double> %4037, splat (double 0x3E7AD7F29ABCAF48)
  %4074 = fcmp ogt <2 x double> %4037, splat (double 1.000000e-05)
  %4075 = fcmp ogt <2 x double> %4037, splat (double 1.000000e-04)
  br label %4076

4076:                                             ; preds = %4065, %4076
  %4077 = phi i64 [ 0, %4065 ], [ %4160, %4076 ]
  %4078 = phi <2 x i64> [ zeroinitializer, %4065 ], [ %4156, %4076 ]
  %4079 = phi <2 x i64> [ zeroinitializer, %4065 ], [ %4107, %4076 ]
  %4080 = phi <2 x double> [ splat (double 1.000000e+00), %4065 ], [ %4159, %4076 ]
  %4081 = getelementptr inbounds nuw %struct.Piece, ptr %4066, i64 %4077
  %4082 = getelementptr inbounds nuw i8, ptr %4081, i64 768
  %4083 = load <2 x double>, ptr %4082, align 16, !tbaa !26
  %4084 = getelementptr inbounds nuw i8, ptr %4081, i64 992
  %4085 = load <2 x double>, ptr %4084, align 16, !tbaa !26
  %4086 = getelementptr inbounds nuw i8, ptr %4081, i64 2080
  %4087 = load <2 x i64>, ptr %4086, align 16, !tbaa !26
  %4088 = xor <2 x i64> %4087, splat (i64 -1)
  %4089 = getelementptr inbounds nuw i8, ptr %4081, i64 224
  %4090 = load <2 x double>, ptr %4089, align 16, !tbaa !26
  %4091 = fmul <2 x double> %4072, %4090
  %4092 = fcmp ogt <2 x double> %4091, splat (double 0x3E7AD7F29ABCAF48)
  %4093 = fneg <2 x double> %4091
  %4094 = select <2 x i1> %4092, <2 x double> %4093, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4095 = fcmp olt <2 x double> %4083, %4094
  %4096 = select <2 x i1> %4095, <2 x i1> %4071, <2 x i1> zeroinitializer
  %4097 = select <2 x i1> %4096, <2 x i64> %4088, <2 x i64> zeroinitializer
  %4098 = fcmp ole <2 x double> %4085, zeroinitializer
  %4099 = select <2 x i1> %4098, <2 x i64> %4097, <2 x i64> zeroinitializer
  %4100 = getelementptr inbounds nuw i8, ptr %4081, i64 208
  %4101 = load <2 x double>, ptr %4100, align 16, !tbaa !26
  %4102 = fmul <2 x double> %4101, splat (double -3.000000e-07)
  %4103 = fcmp olt <2 x double> %4083, %4102
  %4104 = select <2 x i1> %4073, <2 x i1> %4103, <2 x i1> zeroinitializer
  %4105 = select <2 x i1> %4104, <2 x i64> %4099, <2 x i64> zeroinitializer
  %4106 = or <2 x i64> %4105, %4078
  %4107 = or <2 x i64> %4105, %4079
  %4108 = fcmp olt <2 x double> %4080, splat (double 3.000000e-01)
  %4109 = icmp eq <2 x i64> %4105, zeroinitializer
  %4110 = select <2 x i1> %4109, <2 x i1> splat (i1 true), <2 x i1> %4108
  %4111 = select <2 x i1> %4110, <2 x double> %4080, <2 x double> splat (double 3.000000e-01)
  %4112 = xor <2 x i64> %4099, splat (i64 -1)
  %4113 = and <2 x i64> %4097, %4112
  %4114 = select <2 x i1> %4074, <2 x i64> %4113, <2 x i64> zeroinitializer
  %4115 = fsub <2 x double> %4085, %4083
  %4116 = fdiv <2 x double> %4085, %4115
  %4117 = or <2 x i64> %4106, %4114
  %4118 = fcmp olt <2 x double> %4111, %4116
  %4119 = icmp eq <2 x i64> %4114, zeroinitializer
  %4120 = select <2 x i1> %4119, <2 x i1> splat (i1 true), <2 x i1> %4118
  %4121 = select <2 x i1> %4120, <2 x double> %4111, <2 x double> %4116
  %4122 = getelementptr inbounds nuw i8, ptr %4081, i64 976
  %4123 = load <2 x double>, ptr %4122, align 16, !tbaa !26
  %4124 = getelementptr inbounds nuw i8, ptr %4081, i64 752
  %4125 = load <2 x double>, ptr %4124, align 16, !tbaa !26
  %4126 = getelementptr inbounds nuw i8, ptr %4081, i64 1920
  %4127 = load <2 x double>, ptr %4126, align 16, !tbaa !26
  %4128 = fcmp oeq <2 x double> %4127, zeroinitializer
  %4129 = getelementptr inbounds nuw i8, ptr %4081, i64 368
  %4130 = load <2 x double>, ptr %4129, align 16, !tbaa !26
  %4131 = fmul <2 x double> %4130, splat (double 0x3FEFF7CED916872B)
  %4132 = fcmp olt <2 x double> %4125, %4131
  %4133 = and <2 x i1> %4128, %4132
  %4134 = and <2 x i1> %4075, %4133
  %4135 = fsub <2 x double> %4123, %4130
  %4136 = fsub <2 x double> %4123, %4125
  %4137 = fdiv <2 x double> %4135, %4136
  %4138 = fcmp uge <2 x double> %4121, %4137
  %4139 = select <2 x i1> %4134, <2 x i1> %4138, <2 x i1> zeroinitializer
  %4140 = select <2 x i1> %4139, <2 x double> %4137, <2 x double> %4121
  %4141 = fcmp oeq <2 x double> %4127, splat (double 1.000000e+00)
  %4142 = getelementptr inbounds nuw i8, ptr %4081, i64 816
  %4143 = load <2 x double>, ptr %4142, align 16, !tbaa !26
  %4144 = getelementptr inbounds nuw i8, ptr %4081, i64 400
  %4145 = load <2 x double>, ptr %4144, align 16, !tbaa !26
  %4146 = fmul <2 x double> %4145, splat (double 1.000100e+00)
  %4147 = fcmp ogt <2 x double> %4143, %4146
  %4148 = and <2 x i1> %4141, %4147
  %4149 = and <2 x i1> %4075, %4148
  %4150 = getelementptr inbounds nuw i8, ptr %4081, i64 1040
  %4151 = load <2 x double>, ptr %4150, align 16, !tbaa !26
  %4152 = fsub <2 x double> %4145, %4151
  %4153 = fsub <2 x double> %4143, %4151
  %4154 = fdiv <2 x double> %4152, %4153
  %4155 = select <2 x i1> %4148, <2 x i1> %4075, <2 x i1> %4134
  %4156 = select <2 x i1> %4155, <2 x i64> splat (i64 -1), <2 x i64> %4117
  %4157 = fcmp uge <2 x double> %4140, %4154
  %4158 = select <2 x i1> %4149, <2 x i1> %4157, <2 x i1> zeroinitializer
  %4159 = select <2 x i1> %4158, <2 x double> %4154, <2 x double> %4140
  %4160 = add nuw nsw i64 %4077, 1
  %4161 = icmp eq i64 %4160, %4018
  br i1 %4161, label %4162, label %4076, !llvm.loop !134

4162:                                             ; preds = %4076
  %4163 = icmp eq <2 x i64> %4107, zeroinitializer
  br label %4164

4164:                                             ; preds = %4162, %4017
  %4165 = phi <2 x double> [ splat (double 1.000000e+00), %4017 ], [ %4159, %4162 ]
  %4166 = phi <2 x i1> [ splat (i1 true), %4017 ], [ %4163, %4162 ]
  %4167 = phi <2 x i64> [ zeroinitializer, %4017 ], [ %4156, %4162 ]
  %4168 = and <2 x i64> %4167, %4063
  %4169 = fcmp ogt <2 x double> %4050, %4037
  %4170 = select <2 x i1> %4169, <2 x double> %4050, <2 x double> %4037
  %4171 = select <2 x i1> %4166, <2 x double> %4170, <2 x double> zeroinitializer
  %4172 = icmp eq <2 x i64> %4168, zeroinitializer
  %4173 = select <2 x i1> %4172, <2 x double> %4050, <2 x double> %4171
  %4174 = fcmp ogt <2 x double> %4165, splat (double 5.000000e-02)
  %4175 = select <2 x i1> %4174, <2 x double> %4165, <2 x double> splat (double 5.000000e-02)
  %4176 = fcmp olt <2 x double> %4175, splat (double 0x3FEE666666666666)
  %4177 = select <2 x i1> %4176, <2 x double> %4175, <2 x double> splat (double 0x3FEE666666666666)
  %4178 = fmul <2 x double> %4037, %4177
  %4179 = fcmp ogt <2 x double> %4178, splat (double 0x3EB0C6F7A0B5ED8D)
  %4180 = select <2 x i1> %4179, <2 x double> %4178, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4181 = select <2 x i1> %4172, <2 x double> %4059, <2 x double> %4180
  %4182 = fadd <2 x double> %4062, splat (double 1.000000e+00)
  %4183 = select <2 x i1> %4172, <2 x double> %4062, <2 x double> %4182
  %4184 = xor <2 x i64> %4168, %4063
  %4185 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %4186 = fmul <2 x double> %4185, splat (double 5.000000e-01)
  %4187 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %4188 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %4189 = fneg <2 x double> %4186
  %4190 = icmp eq <2 x i64> %4188, zeroinitializer
  %4191 = select <2 x i1> %4190, <2 x double> %4189, <2 x double> %4186
  %4192 = fadd <2 x double> %4187, %4191
  %4193 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %4194 = fsub <2 x double> %4193, %4192
  %4195 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %4196 = fsub <2 x double> %4195, %4192
  %4197 = fneg <2 x double> %4194
  %4198 = select <2 x i1> %4190, <2 x double> %4197, <2 x double> %4194
  %4199 = fneg <2 x double> %4196
  %4200 = select <2 x i1> %4190, <2 x double> %4199, <2 x double> %4196
  %4201 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %4202 = fcmp oeq <2 x double> %4201, zeroinitializer
  %4203 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %4204 = fcmp oeq <2 x double> %4203, zeroinitializer
  %4205 = and <2 x i1> %4202, %4204
  %4206 = fcmp olt <2 x double> %4198, splat (double -4.000000e-03)
  %4207 = and <2 x i1> %4205, %4206
  %4208 = fcmp ogt <2 x double> %4200, splat (double 4.000000e-03)
  %4209 = and <2 x i1> %4208, %4207
  %4210 = and <2 x i1> %4038, %4209
  %4211 = fsub <2 x double> %4198, %4200
  %4212 = fdiv <2 x double> %4198, %4211
  %4213 = select <2 x i1> %4210, <2 x i64> %4184, <2 x i64> zeroinitializer
  %4214 = fcmp ogt <2 x double> %4173, %4037
  %4215 = icmp eq <2 x i64> %4213, zeroinitializer
  %4216 = select <2 x i1> %4215, <2 x i1> splat (i1 true), <2 x i1> %4214
  %4217 = select <2 x i1> %4216, <2 x double> %4173, <2 x double> %4037
  store <2 x double> %4217, ptr %172, align 16, !tbaa !26
  %4218 = fcmp ogt <2 x double> %4212, splat (double 5.000000e-02)
  %4219 = select <2 x i1> %4218, <2 x double> %4212, <2 x double> splat (double 5.000000e-02)
  %4220 = fcmp olt <2 x double> %4219, splat (double 0x3FEE666666666666)
  %4221 = select <2 x i1> %4220, <2 x double> %4219, <2 x double> splat (double 0x3FEE666666666666)
  %4222 = fmul <2 x double> %4037, %4221
  %4223 = fcmp ogt <2 x double> %4222, splat (double 0x3EB0C6F7A0B5ED8D)
  %4224 = select <2 x i1> %4223, <2 x double> %4222, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4225 = select <2 x i1> %4215, <2 x double> %4181, <2 x double> %4224
  store <2 x double> %4225, ptr %152, align 16, !tbaa !26
  %4226 = fadd <2 x double> %4183, splat (double 1.000000e+00)
  %4227 = select <2 x i1> %4215, <2 x double> %4183, <2 x double> %4226
  store <2 x double> %4227, ptr %137, align 16, !tbaa !26
  %4228 = xor <2 x i64> %4213, %4184
  %4229 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %4230 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %4231 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %4232 = fsub <2 x double> %4230, %4231
  %4233 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %4234 = fcmp une <2 x double> %4233, splat (double 1.000000e+00)
  %4235 = load <2 x double>, ptr %224, align 16, !tbaa !26
  %4236 = fsub <2 x double> %4193, %4235
  %4237 = select <2 x i1> %4234, <2 x double> splat (double -1.000000e+00), <2 x double> %4236
  %4238 = fcmp une <2 x double> %4233, splat (double 2.000000e+00)
  %4239 = fsub <2 x double> %4229, %4235
  %4240 = select <2 x i1> %4238, <2 x double> %4237, <2 x double> %4239
  %4241 = fcmp une <2 x double> %4233, splat (double 3.000000e+00)
  %4242 = fsub <2 x double> %4232, %4235
  %4243 = select <2 x i1> %4241, <2 x double> %4240, <2 x double> %4242
  %4244 = fcmp une <2 x double> %4233, splat (double 4.000000e+00)
  %4245 = fsub <2 x double> %4235, %4232
  %4246 = select <2 x i1> %4244, <2 x double> %4243, <2 x double> %4245
  br i1 %4064, label %4247, label %4295

4247:                                             ; preds = %4164
  %4248 = load ptr, ptr %142, align 8, !tbaa !28
  %4249 = and i64 %4018, 3
  %4250 = icmp ult i64 %4018, 4
  br i1 %4250, label %4279, label %4251

4251:                                             ; preds = %4247
  %4252 = and i64 %4018, 9223372036854775804
  br label %4253

4253:                                             ; preds = %4253, %4251
  %4254 = phi i64 [ 0, %4251 ], [ %4276, %4253 ]
  %4255 = phi <2 x double> [ splat (double 1.000000e+09), %4251 ], [ %4275, %4253 ]
  %4256 = phi i64 [ 0, %4251 ], [ %4277, %4253 ]
  %4257 = getelementptr inbounds nuw %struct.Piece, ptr %4248, i64 %4254, i32 35
  %4258 = load <2 x double>, ptr %4257, align 16, !tbaa !26
  %4259 = fcmp olt <2 x double> %4255, %4258
  %4260 = select <2 x i1> %4259, <2 x double> %4255, <2 x double> %4258
  %4261 = or disjoint i64 %4254, 1
  %4262 = getelementptr inbounds nuw %struct.Piece, ptr %4248, i64 %4261, i32 35
  %4263 = load <2 x double>, ptr %4262, align 16, !tbaa !26
  %4264 = fcmp olt <2 x double> %4260, %4263
  %4265 = select <2 x i1> %4264, <2 x double> %4260, <2 x double> %4263
  %4266 = or disjoint i64 %4254, 2
  %4267 = getelementptr inbounds nuw %struct.Piece, ptr %4248, i64 %4266, i32 35
  %4268 = load <2 x double>, ptr %4267, align 16, !tbaa !26
  %4269 = fcmp olt <2 x double> %4265, %4268
  %4270 = select <2 x i1> %4269, <2 x double> %4265, <2 x double> %4268
  %4271 = or disjoint i64 %4254, 3
  %4272 = getelementptr inbounds nuw %struct.Piece, ptr %4248, i64 %4271, i32 35
  %4273 = load <2 x double>, ptr %4272, align 16, !tbaa !26
  %4274 = fcmp olt <2 x double> %4270, %4273
  %4275 = select <2 x i1> %4274, <2 x double> %4270, <2 x double> %4273
  %4276 = add nuw nsw i64 %4254, 4
  %4277 = add i64 %4256, 4
  %4278 = icmp eq i64 %4277, %4252
  br i1 %4278, label %4279, label %4253, !llvm.loop !135

4279:                                             ; preds = %4253, %4247
  %4280 = phi <2 x double> [ poison, %4247 ], [ %4275, %4253 ]
  %4281 = phi i64 [ 0, %4247 ], [ %4276, %4253 ]
  %4282 = phi <2 x double> [ splat (double 1.000000e+09), %4247 ], [ %4275, %4253 ]
  %4283 = icmp eq i64 %4249, 0
  br i1 %4283, label %4295, label %4284

4284:                                             ; preds = %4279, %4284
  %4285 = phi i64 [ %4292, %4284 ], [ %4281, %4279 ]
  %4286 = phi <2 x double> [ %4291, %4284 ], [ %4282, %4279 ]
  %4287 = phi i64 [ %4293, %4284 ], [ 0, %4279 ]
  %4288 = getelementptr inbounds nuw %struct.Piece, ptr %4248, i64 %4285, i32 35
  %4289 = load <2 x double>, ptr %4288, align 16, !tbaa !26
  %4290 = fcmp olt <2 x double> %4286, %4289
  %4291 = select <2 x i1> %4290, <2 x double> %4286, <2 x double> %4289
  %4292 = add nuw nsw i64 %4285, 1
  %4293 = add i64 %4287, 1
  %4294 = icmp eq i64 %4293, %4249
  br i1 %4294, label %4295, label %4284, !llvm.loop !136

4295:                                             ; preds = %4279, %4284, %4164
  %4296 = phi <2 x double> [ splat (double 1.000000e+09), %4164 ], [ %4280, %4279 ], [ %4291, %4284 ]
  %4297 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %4298 = fsub <2 x double> %4297, %4231
  %4299 = fsub <2 x double> %4195, %4235
  %4300 = select <2 x i1> %4234, <2 x double> splat (double -1.000000e+00), <2 x double> %4299
  %4301 = fsub <2 x double> %4296, %4235
  %4302 = select <2 x i1> %4238, <2 x double> %4300, <2 x double> %4301
  %4303 = fsub <2 x double> %4298, %4235
  %4304 = select <2 x i1> %4241, <2 x double> %4302, <2 x double> %4303
  %4305 = fsub <2 x double> %4235, %4298
  %4306 = select <2 x i1> %4244, <2 x double> %4304, <2 x double> %4305
  %4307 = fcmp une <2 x double> %4233, zeroinitializer
  %4308 = fcmp oge <2 x double> %4037, splat (double 5.000000e-02)
  %4309 = and <2 x i1> %4308, %4307
  %4310 = fcmp olt <2 x double> %4246, zeroinitializer
  %4311 = and <2 x i1> %4309, %4310
  %4312 = fsub <2 x double> %4306, %4246
  %4313 = fmul <2 x double> %4312, splat (double 2.000000e-02)
  %4314 = fcmp ogt <2 x double> %4306, %4313
  %4315 = and <2 x i1> %4311, %4314
  %4316 = fsub <2 x double> %4246, %4306
  %4317 = fdiv <2 x double> %4246, %4316
  %4318 = fcmp olt <2 x double> %4317, splat (double 0x3FEE666666666666)
  %4319 = and <2 x i1> %4318, %4315
  %4320 = select <2 x i1> %4319, <2 x i64> %4228, <2 x i64> zeroinitializer
  %4321 = fcmp ogt <2 x double> %4217, %4037
  %4322 = icmp eq <2 x i64> %4320, zeroinitializer
  %4323 = select <2 x i1> %4322, <2 x i1> splat (i1 true), <2 x i1> %4321
  %4324 = select <2 x i1> %4323, <2 x double> %4217, <2 x double> %4037
  store <2 x double> %4324, ptr %172, align 16, !tbaa !26
  %4325 = fcmp ogt <2 x double> %4317, splat (double 5.000000e-02)
  %4326 = select <2 x i1> %4325, <2 x double> %4317, <2 x double> splat (double 5.000000e-02)
  %4327 = fcmp olt <2 x double> %4326, splat (double 0x3FEE666666666666)
  %4328 = select <2 x i1> %4327, <2 x double> %4326, <2 x double> splat (double 0x3FEE666666666666)
  %4329 = fmul <2 x double> %4037, %4328
  %4330 = fcmp ogt <2 x double> %4329, splat (double 0x3EB0C6F7A0B5ED8D)
  %4331 = select <2 x i1> %4330, <2 x double> %4329, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4332 = select <2 x i1> %4322, <2 x double> %4225, <2 x double> %4331
  store <2 x double> %4332, ptr %152, align 16, !tbaa !26
  %4333 = fadd <2 x double> %4227, splat (double 1.000000e+00)
  %4334 = select <2 x i1> %4322, <2 x double> %4227, <2 x double> %4333
  store <2 x double> %4334, ptr %137, align 16, !tbaa !26
  %4335 = xor <2 x i64> %4320, %4228
  %4336 = or <2 x i64> %4335, %4024
  %4337 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4336)
  %4338 = icmp eq i64 %4337, 0
  br i1 %4338, label %528, label %4395

4339:                                             ; preds = %3971, %4387
  %4340 = phi i64 [ 0, %3971 ], [ %4392, %4387 ]
  %4341 = load ptr, ptr %142, align 8, !tbaa !28
  %4342 = getelementptr inbounds nuw %struct.Piece, ptr %4341, i64 %4340
  %4343 = getelementptr inbounds nuw i8, ptr %4342, i64 2136
  %4344 = load ptr, ptr %4343, align 8, !tbaa !58
  %4345 = load <2 x double>, ptr %4344, align 16, !tbaa !26
  %4346 = getelementptr inbounds nuw i8, ptr %4342, i64 336
  %4347 = load <2 x double>, ptr %4346, align 16, !tbaa !26
  %4348 = getelementptr inbounds nuw i8, ptr %4344, i64 16
  %4349 = load <2 x double>, ptr %4348, align 16, !tbaa !26
  %4350 = fsub <2 x double> %4349, %4345
  %4351 = fneg <2 x double> %4347
  %4352 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4351, <2 x double> %4350, <2 x double> %4345)
  %4353 = getelementptr inbounds nuw i8, ptr %4342, i64 2128
  %4354 = load i64, ptr %4353, align 16, !tbaa !31
  %4355 = icmp eq i64 %4354, 0
  br i1 %4355, label %4387, label %4356

4356:                                             ; preds = %4339
  %4357 = getelementptr <2 x double>, ptr %4344, i64 %4354
  %4358 = getelementptr i8, ptr %4357, i64 -16
  %4359 = load <2 x double>, ptr %4358, align 16, !tbaa !26
  %4360 = load <2 x double>, ptr %4357, align 16, !tbaa !26
  %4361 = getelementptr inbounds nuw i8, ptr %4342, i64 720
  %4362 = load <2 x double>, ptr %4361, align 16, !tbaa !26
  %4363 = getelementptr inbounds nuw i8, ptr %4342, i64 736
  %4364 = load <2 x double>, ptr %4363, align 16, !tbaa !26
  %4365 = getelementptr inbounds nuw i8, ptr %4342, i64 16
  %4366 = load <2 x double>, ptr %4365, align 16, !tbaa !26
  %4367 = fsub <2 x double> %4364, %4366
  %4368 = fmul <2 x double> %4362, %4367
  %4369 = getelementptr inbounds nuw i8, ptr %4342, i64 144
  %4370 = load <2 x double>, ptr %4369, align 16, !tbaa !26
  %4371 = getelementptr inbounds nuw i8, ptr %4342, i64 704
  %4372 = load <2 x double>, ptr %4371, align 16, !tbaa !26
  %4373 = fdiv <2 x double> %4370, %4372
  %4374 = getelementptr inbounds nuw i8, ptr %4342, i64 48
  %4375 = load <2 x double>, ptr %4374, align 16, !tbaa !26
  %4376 = getelementptr inbounds nuw i8, ptr %4342, i64 64
  %4377 = load <2 x double>, ptr %4376, align 16, !tbaa !26
  %4378 = getelementptr inbounds nuw i8, ptr %4342, i64 80
  %4379 = load <2 x double>, ptr %4378, align 16, !tbaa !26
  %4380 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4360, <2 x double> %4379, <2 x double> %4377)
  %4381 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4360, <2 x double> %4380, <2 x double> %4375)
  %4382 = fdiv <2 x double> %4381, %4368
  %4383 = fmul <2 x double> %4360, %4382
  %4384 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4373, <2 x double> %4359, <2 x double> %4383)
  %4385 = fadd <2 x double> %4373, %4382
  %4386 = fdiv <2 x double> %4384, %4385
  br label %4387

4387:                                             ; preds = %4339, %4356
  %4388 = phi <2 x double> [ %4386, %4356 ], [ %4352, %4339 ]
  %4389 = getelementptr inbounds nuw i8, ptr %4342, i64 1904
  %4390 = load <2 x double>, ptr %4389, align 16, !tbaa !26
  %4391 = select <2 x i1> %3972, <2 x double> %4390, <2 x double> %4388
  store <2 x double> %4391, ptr %4389, align 16, !tbaa !26
  %4392 = add nuw nsw i64 %4340, 1
  %4393 = load i64, ptr %169, align 8, !tbaa !20
  %4394 = icmp slt i64 %4392, %4393
  br i1 %4394, label %4339, label %4017, !llvm.loop !138

4395:                                             ; preds = %4295
  %4396 = icmp eq <2 x i64> %4336, zeroinitializer
  %4397 = select <2 x i1> %4396, <2 x double> %4031, <2 x double> %4030
  store <2 x double> %4397, ptr %219, align 16, !tbaa !26
  %4398 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %4399 = select <2 x i1> %4396, <2 x double> %4398, <2 x double> %4193
  store <2 x double> %4399, ptr %163, align 16, !tbaa !26
  %4400 = select <2 x i1> %4396, <2 x double> %4193, <2 x double> %4195
  store <2 x double> %4400, ptr %157, align 16, !tbaa !26
  %4401 = load <2 x double>, ptr %251, align 16, !tbaa !26
  %4402 = select <2 x i1> %4396, <2 x double> %4401, <2 x double> %4230
  store <2 x double> %4402, ptr %251, align 16, !tbaa !26
  %4403 = select <2 x i1> %4396, <2 x double> %4230, <2 x double> %4297
  store <2 x double> %4403, ptr %252, align 16, !tbaa !26
  %4404 = load <2 x double>, ptr %254, align 16, !tbaa !26
  %4405 = load <2 x double>, ptr %253, align 16, !tbaa !26
  %4406 = select <2 x i1> %4396, <2 x double> %4405, <2 x double> %4404
  store <2 x double> %4406, ptr %253, align 16, !tbaa !26
  %4407 = load <2 x double>, ptr %255, align 16, !tbaa !26
  %4408 = select <2 x i1> %4396, <2 x double> %4404, <2 x double> %4407
  store <2 x double> %4408, ptr %254, align 16, !tbaa !26
  %4409 = load <2 x double>, ptr %257, align 16, !tbaa !26
  %4410 = load <2 x double>, ptr %256, align 16, !tbaa !26
  %4411 = select <2 x i1> %4396, <2 x double> %4410, <2 x double> %4409
  store <2 x double> %4411, ptr %256, align 16, !tbaa !26
  %4412 = load <2 x double>, ptr %258, align 16, !tbaa !26
  %4413 = select <2 x i1> %4396, <2 x double> %4409, <2 x double> %4412
  store <2 x double> %4413, ptr %257, align 16, !tbaa !26
  %4414 = load <2 x double>, ptr %260, align 16, !tbaa !26
  %4415 = load <2 x double>, ptr %259, align 16, !tbaa !26
  %4416 = select <2 x i1> %4396, <2 x double> %4415, <2 x double> %4414
  store <2 x double> %4416, ptr %259, align 16, !tbaa !26
  %4417 = load <2 x double>, ptr %261, align 16, !tbaa !26
  %4418 = select <2 x i1> %4396, <2 x double> %4414, <2 x double> %4417
  store <2 x double> %4418, ptr %260, align 16, !tbaa !26
  %4419 = load <2 x double>, ptr %263, align 16, !tbaa !26
  %4420 = load <2 x double>, ptr %262, align 16, !tbaa !26
  %4421 = select <2 x i1> %4396, <2 x double> %4420, <2 x double> %4419
  store <2 x double> %4421, ptr %262, align 16, !tbaa !26
  %4422 = load <2 x double>, ptr %264, align 16, !tbaa !26
  %4423 = select <2 x i1> %4396, <2 x double> %4419, <2 x double> %4422
  store <2 x double> %4423, ptr %263, align 16, !tbaa !26
  %4424 = xor <2 x i64> %4336, splat (i64 -1)
  br i1 %4064, label %4425, label %4827

4425:                                             ; preds = %4395, %4783
  %4426 = phi i64 [ %4795, %4783 ], [ 0, %4395 ]
  %4427 = load ptr, ptr %142, align 8, !tbaa !28
  %4428 = getelementptr inbounds nuw %struct.Piece, ptr %4427, i64 %4426
  %4429 = getelementptr inbounds nuw i8, ptr %4428, i64 416
  %4430 = load <2 x double>, ptr %4429, align 16, !tbaa !26
  %4431 = fcmp ogt <2 x double> %4430, zeroinitializer
  %4432 = bitcast <2 x i1> %4431 to i2
  %4433 = icmp eq i2 %4432, 0
  br i1 %4433, label %4690, label %4434

4434:                                             ; preds = %4425
  %4435 = load i64, ptr %132, align 16, !tbaa !21
  %4436 = add i64 %4435, -1
  %4437 = getelementptr inbounds nuw i8, ptr %4428, i64 1168
  %4438 = load <2 x double>, ptr %4437, align 16, !tbaa !26
  %4439 = getelementptr inbounds nuw i8, ptr %4428, i64 944
  %4440 = load <2 x double>, ptr %4439, align 16, !tbaa !26
  %4441 = getelementptr inbounds nuw i8, ptr %4428, i64 2128
  %4442 = load i64, ptr %4441, align 16, !tbaa !31
  %4443 = icmp sgt i64 %4435, %4442
  br i1 %4443, label %4452, label %4444

4444:                                             ; preds = %4434
  %4445 = getelementptr inbounds nuw i8, ptr %4428, i64 2224
  %4446 = load ptr, ptr %4445, align 16, !tbaa !73
  %4447 = getelementptr inbounds <2 x double>, ptr %4446, i64 %4436
  %4448 = load <2 x double>, ptr %4447, align 16, !tbaa !26
  %4449 = getelementptr inbounds nuw i8, ptr %4428, i64 384
  %4450 = load <2 x double>, ptr %4449, align 16, !tbaa !26
  %4451 = fmul <2 x double> %4448, %4450
  br label %4461

4452:                                             ; preds = %4434
  %4453 = getelementptr inbounds nuw i8, ptr %4428, i64 384
  %4454 = load <2 x double>, ptr %4453, align 16, !tbaa !26
  %4455 = getelementptr inbounds nuw i8, ptr %4428, i64 2224
  %4456 = load ptr, ptr %4455, align 16, !tbaa !73
  %4457 = getelementptr inbounds <2 x double>, ptr %4456, i64 %4436
  %4458 = load <2 x double>, ptr %4457, align 16, !tbaa !26
  %4459 = fsub <2 x double> %4438, %4454
  %4460 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4458, <2 x double> %4459, <2 x double> %4454)
  br label %4461

4461:                                             ; preds = %4452, %4444
  %4462 = phi <2 x double> [ %4450, %4444 ], [ %4454, %4452 ]
  %4463 = phi <2 x double> [ %4451, %4444 ], [ %4460, %4452 ]
  %4464 = getelementptr inbounds nuw i8, ptr %4428, i64 752
  %4465 = load <2 x double>, ptr %4464, align 16, !tbaa !26
  %4466 = fcmp ole <2 x double> %4463, %4465
  %4467 = getelementptr inbounds nuw i8, ptr %4428, i64 1920
  %4468 = load <2 x double>, ptr %4467, align 16, !tbaa !26
  %4469 = fcmp oeq <2 x double> %4468, zeroinitializer
  %4470 = select <2 x i1> %4469, <2 x i1> %4466, <2 x i1> zeroinitializer
  %4471 = select <2 x i1> %4470, <2 x i64> %4336, <2 x i64> zeroinitializer
  %4472 = xor <2 x i64> %4471, %4336
  %4473 = fsub <2 x double> %4438, %4440
  %4474 = getelementptr inbounds nuw i8, ptr %4428, i64 384
  %4475 = fsub <2 x double> %4440, %4462
  %4476 = fdiv <2 x double> %4473, %4475
  %4477 = getelementptr inbounds nuw i8, ptr %4428, i64 2168
  %4478 = load ptr, ptr %4477, align 8, !tbaa !68
  %4479 = getelementptr inbounds <2 x double>, ptr %4478, i64 %4442
  %4480 = load <2 x double>, ptr %4479, align 16, !tbaa !26
  %4481 = getelementptr inbounds nuw i8, ptr %4428, i64 2176
  %4482 = load ptr, ptr %4481, align 16, !tbaa !48
  %4483 = getelementptr inbounds <2 x double>, ptr %4482, i64 %4442
  %4484 = load <2 x double>, ptr %4483, align 16, !tbaa !26
  %4485 = icmp eq <2 x i64> %4471, zeroinitializer
  %4486 = select <2 x i1> %4485, <2 x double> %4484, <2 x double> %4480
  store <2 x double> %4486, ptr %4483, align 16, !tbaa !26
  %4487 = load i64, ptr %4441, align 16, !tbaa !31
  %4488 = add nsw i64 %4487, 1
  %4489 = icmp slt i64 %4488, %4436
  br i1 %4489, label %4490, label %4494

4490:                                             ; preds = %4461
  %4491 = getelementptr inbounds nuw i8, ptr %4428, i64 2240
  br label %4536

4492:                                             ; preds = %4536
  %4493 = load i64, ptr %4441, align 16, !tbaa !31
  br label %4494

4494:                                             ; preds = %4492, %4461
  %4495 = phi i64 [ %4487, %4461 ], [ %4493, %4492 ]
  %4496 = phi <2 x double> [ %4480, %4461 ], [ %4541, %4492 ]
  %4497 = icmp sgt i64 %4435, %4495
  br i1 %4497, label %4505, label %4498

4498:                                             ; preds = %4494
  %4499 = getelementptr inbounds nuw i8, ptr %4428, i64 2224
  %4500 = load ptr, ptr %4499, align 16, !tbaa !73
  %4501 = getelementptr inbounds <2 x double>, ptr %4500, i64 %4436
  %4502 = load <2 x double>, ptr %4501, align 16, !tbaa !26
  %4503 = load <2 x double>, ptr %4474, align 16, !tbaa !26
  %4504 = fmul <2 x double> %4502, %4503
  br label %4513

4505:                                             ; preds = %4494
  %4506 = load <2 x double>, ptr %4474, align 16, !tbaa !26
  %4507 = getelementptr inbounds nuw i8, ptr %4428, i64 2224
  %4508 = load ptr, ptr %4507, align 16, !tbaa !73
  %4509 = getelementptr inbounds <2 x double>, ptr %4508, i64 %4436
  %4510 = load <2 x double>, ptr %4509, align 16, !tbaa !26
  %4511 = fsub <2 x double> %4440, %4506
  %4512 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4510, <2 x double> %4511, <2 x double> %4506)
  br label %4513

4513:                                             ; preds = %4505, %4498
  %4514 = phi <2 x double> [ %4504, %4498 ], [ %4512, %4505 ]
  %4515 = load ptr, ptr %4477, align 8, !tbaa !68
  %4516 = getelementptr inbounds <2 x double>, ptr %4515, i64 %4436
  %4517 = load <2 x double>, ptr %4516, align 16, !tbaa !26
  %4518 = load ptr, ptr %4481, align 16, !tbaa !48
  %4519 = getelementptr inbounds <2 x double>, ptr %4518, i64 %4436
  %4520 = fsub <2 x double> %4496, %4517
  %4521 = fsub <2 x double> %4463, %4514
  %4522 = load <2 x double>, ptr %4464, align 16, !tbaa !26
  %4523 = fsub <2 x double> %4522, %4514
  %4524 = fdiv <2 x double> %4521, %4523
  %4525 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4520, <2 x double> %4524, <2 x double> %4517)
  %4526 = load <2 x double>, ptr %4519, align 16, !tbaa !26
  %4527 = select <2 x i1> %4485, <2 x double> %4526, <2 x double> %4525
  store <2 x double> %4527, ptr %4519, align 16, !tbaa !26
  %4528 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4472)
  %4529 = icmp eq i64 %4528, 0
  br i1 %4529, label %4690, label %4530

4530:                                             ; preds = %4513
  %4531 = getelementptr inbounds nuw i8, ptr %4428, i64 2224
  %4532 = getelementptr inbounds nuw i8, ptr %4428, i64 784
  %4533 = getelementptr inbounds nuw i8, ptr %4428, i64 208
  %4534 = extractelement <2 x i64> %4472, i64 0
  %4535 = extractelement <2 x i64> %4472, i64 1
  br label %4554

4536:                                             ; preds = %4490, %4536
  %4537 = phi i64 [ %4488, %4490 ], [ %4552, %4536 ]
  %4538 = phi <2 x double> [ %4480, %4490 ], [ %4541, %4536 ]
  %4539 = load ptr, ptr %4477, align 8, !tbaa !68
  %4540 = getelementptr inbounds <2 x double>, ptr %4539, i64 %4537
  %4541 = load <2 x double>, ptr %4540, align 16, !tbaa !26
  %4542 = load ptr, ptr %4481, align 16, !tbaa !48
  %4543 = getelementptr inbounds <2 x double>, ptr %4542, i64 %4537
  %4544 = fsub <2 x double> %4538, %4541
  %4545 = load ptr, ptr %4491, align 16, !tbaa !139
  %4546 = getelementptr inbounds <2 x double>, ptr %4545, i64 %4537
  %4547 = load <2 x double>, ptr %4546, align 16, !tbaa !26
  %4548 = fmul <2 x double> %4476, %4547
  %4549 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4544, <2 x double> %4548, <2 x double> %4541)
  %4550 = load <2 x double>, ptr %4543, align 16, !tbaa !26
  %4551 = select <2 x i1> %4485, <2 x double> %4550, <2 x double> %4549
  store <2 x double> %4551, ptr %4543, align 16, !tbaa !26
  %4552 = add nsw i64 %4537, 1
  %4553 = icmp eq i64 %4552, %4436
  br i1 %4553, label %4492, label %4536, !llvm.loop !140

4554:                                             ; preds = %4530, %4689
  %4555 = phi i1 [ true, %4530 ], [ false, %4689 ]
  %4556 = phi i64 [ %4534, %4530 ], [ %4535, %4689 ]
  %4557 = phi i64 [ 0, %4530 ], [ 1, %4689 ]
  %4558 = icmp eq i64 %4556, 0
  br i1 %4558, label %4689, label %4559

4559:                                             ; preds = %4554
  %4560 = load i64, ptr %132, align 16, !tbaa !21
  %4561 = load i64, ptr %4441, align 16, !tbaa !31
  %4562 = getelementptr inbounds nuw double, ptr %4474, i64 %4557
  %4563 = load double, ptr %4562, align 8, !tbaa !43
  %4564 = getelementptr inbounds nuw double, ptr %4464, i64 %4557
  %4565 = load double, ptr %4564, align 8, !tbaa !43
  %4566 = add nsw i64 %4560, -1
  %4567 = icmp sgt i64 %4560, %4561
  br i1 %4567, label %4568, label %4689

4568:                                             ; preds = %4559
  %4569 = getelementptr inbounds nuw double, ptr %4439, i64 %4557
  %4570 = load double, ptr %4569, align 8, !tbaa !43
  %4571 = getelementptr inbounds nuw double, ptr %4437, i64 %4557
  %4572 = load double, ptr %4571, align 8, !tbaa !43
  %4573 = load ptr, ptr %4531, align 16
  %4574 = getelementptr i8, ptr %4573, i64 16
  %4575 = getelementptr double, ptr %4574, i64 %4557
  %4576 = fsub double %4570, %4563
  %4577 = getelementptr double, ptr %4573, i64 %4557
  %4578 = fsub double %4572, %4563
  %4579 = load ptr, ptr %4477, align 8, !tbaa !68
  %4580 = getelementptr double, ptr %4579, i64 %4557
  %4581 = load ptr, ptr %4481, align 16, !tbaa !48
  %4582 = getelementptr double, ptr %4581, i64 %4557
  %4583 = getelementptr <2 x double>, ptr %4577, i64 %4566
  br label %4611

4584:                                             ; preds = %4657
  %4585 = getelementptr inbounds nuw double, ptr %4467, i64 %4557
  %4586 = load double, ptr %4585, align 8, !tbaa !43
  %4587 = fcmp ogt double %4586, 0.000000e+00
  %4588 = fcmp ogt double %4668, 0.000000e+00
  %4589 = select i1 %4587, i1 %4588, i1 false
  br i1 %4589, label %4590, label %4689

4590:                                             ; preds = %4584
  %4591 = getelementptr inbounds nuw double, ptr %4532, i64 %4557
  %4592 = getelementptr inbounds nuw double, ptr %4533, i64 %4557
  %4593 = sub i64 %4560, %4561
  %4594 = add i64 %4561, 1
  %4595 = and i64 %4593, 1
  %4596 = icmp eq i64 %4595, 0
  br i1 %4596, label %4606, label %4597

4597:                                             ; preds = %4590
  %4598 = load double, ptr %4591, align 8, !tbaa !43
  %4599 = load double, ptr %4592, align 8, !tbaa !43
  %4600 = fmul double %4668, %4599
  %4601 = fdiv double %4598, %4600
  %4602 = getelementptr <2 x double>, ptr %4582, i64 %4561
  %4603 = load double, ptr %4602, align 8, !tbaa !43
  %4604 = fmul double %4603, %4601
  store double %4604, ptr %4602, align 8, !tbaa !43
  %4605 = add nsw i64 %4561, 1
  br label %4606

4606:                                             ; preds = %4597, %4590
  %4607 = phi i64 [ %4561, %4590 ], [ %4605, %4597 ]
  %4608 = icmp eq i64 %4560, %4594
  br i1 %4608, label %4689, label %4609

4609:                                             ; preds = %4606
  %4610 = getelementptr i8, ptr %4582, i64 16
  br label %4671

4611:                                             ; preds = %4657, %4568
  %4612 = phi double [ 0.000000e+00, %4568 ], [ %4668, %4657 ]
  %4613 = phi i64 [ %4566, %4568 ], [ %4669, %4657 ]
  %4614 = icmp eq i64 %4613, %4566
  br i1 %4614, label %4615, label %4618

4615:                                             ; preds = %4611
  %4616 = load double, ptr %4583, align 8, !tbaa !43
  %4617 = tail call noundef double @llvm.fmuladd.f64(double %4616, double %4576, double %4563)
  br label %4629

4618:                                             ; preds = %4611
  %4619 = getelementptr <2 x double>, ptr %4575, i64 %4613
  %4620 = load double, ptr %4619, align 8, !tbaa !43
  %4621 = tail call noundef double @llvm.fmuladd.f64(double %4620, double %4576, double %4563)
  %4622 = getelementptr <2 x double>, ptr %4577, i64 %4613
  %4623 = load double, ptr %4622, align 8, !tbaa !43
  %4624 = tail call noundef double @llvm.fmuladd.f64(double %4623, double %4576, double %4563)
  %4625 = tail call noundef double @llvm.fmuladd.f64(double %4620, double %4578, double %4563)
  %4626 = fcmp ult double %4625, %4621
  br i1 %4626, label %4627, label %4629

4627:                                             ; preds = %4618
  %4628 = add nsw i64 %4613, 1
  br label %4629

4629:                                             ; preds = %4627, %4618, %4615
  %4630 = phi double [ %4624, %4627 ], [ %4624, %4618 ], [ %4617, %4615 ]
  %4631 = phi double [ %4621, %4627 ], [ %4621, %4618 ], [ %4565, %4615 ]
  %4632 = phi i64 [ %4628, %4627 ], [ %4613, %4618 ], [ %4566, %4615 ]
  %4633 = icmp sgt i64 %4632, %4561
  br i1 %4633, label %4634, label %4657

4634:                                             ; preds = %4629
  %4635 = load ptr, ptr %4477, align 8
  %4636 = getelementptr double, ptr %4635, i64 %4557
  br label %4637

4637:                                             ; preds = %4652, %4634
  %4638 = phi i64 [ %4632, %4634 ], [ %4655, %4652 ]
  %4639 = phi double [ 0.000000e+00, %4634 ], [ %4654, %4652 ]
  %4640 = phi double [ %4631, %4634 ], [ %4653, %4652 ]
  %4641 = getelementptr <2 x double>, ptr %4577, i64 %4638
  %4642 = load double, ptr %4641, align 8, !tbaa !43
  %4643 = tail call noundef double @llvm.fmuladd.f64(double %4642, double %4578, double %4563)
  %4644 = fcmp ogt double %4643, %4630
  br i1 %4644, label %4645, label %4657

4645:                                             ; preds = %4637
  %4646 = fcmp ogt double %4640, %4643
  br i1 %4646, label %4647, label %4652

4647:                                             ; preds = %4645
  %4648 = getelementptr <2 x double>, ptr %4636, i64 %4638
  %4649 = load double, ptr %4648, align 8, !tbaa !43
  %4650 = fsub double %4640, %4643
  %4651 = tail call double @llvm.fmuladd.f64(double %4649, double %4650, double %4639)
  br label %4652

4652:                                             ; preds = %4647, %4645
  %4653 = phi double [ %4643, %4647 ], [ %4640, %4645 ]
  %4654 = phi double [ %4651, %4647 ], [ %4639, %4645 ]
  %4655 = add nsw i64 %4638, -1
  %4656 = icmp sgt i64 %4655, %4561
  br i1 %4656, label %4637, label %4657, !llvm.loop !141

4657:                                             ; preds = %4652, %4637, %4629
  %4658 = phi double [ %4631, %4629 ], [ %4640, %4637 ], [ %4653, %4652 ]
  %4659 = phi double [ 0.000000e+00, %4629 ], [ %4639, %4637 ], [ %4654, %4652 ]
  %4660 = phi i64 [ %4632, %4629 ], [ %4638, %4637 ], [ %4561, %4652 ]
  %4661 = getelementptr <2 x double>, ptr %4580, i64 %4660
  %4662 = load double, ptr %4661, align 8, !tbaa !43
  %4663 = fsub double %4658, %4630
  %4664 = tail call double @llvm.fmuladd.f64(double %4662, double %4663, double %4659)
  %4665 = fsub double %4631, %4630
  %4666 = fdiv double %4664, %4665
  %4667 = getelementptr <2 x double>, ptr %4582, i64 %4613
  store double %4666, ptr %4667, align 8, !tbaa !43
  %4668 = fadd double %4612, %4664
  %4669 = add nsw i64 %4613, -1
  %4670 = icmp sgt i64 %4613, %4561
  br i1 %4670, label %4611, label %4584, !llvm.loop !142

4671:                                             ; preds = %4671, %4609
  %4672 = phi i64 [ %4607, %4609 ], [ %4687, %4671 ]
  %4673 = load double, ptr %4591, align 8, !tbaa !43
  %4674 = load double, ptr %4592, align 8, !tbaa !43
  %4675 = fmul double %4668, %4674
  %4676 = fdiv double %4673, %4675
  %4677 = getelementptr <2 x double>, ptr %4582, i64 %4672
  %4678 = load double, ptr %4677, align 8, !tbaa !43
  %4679 = fmul double %4678, %4676
  store double %4679, ptr %4677, align 8, !tbaa !43
  %4680 = load double, ptr %4591, align 8, !tbaa !43
  %4681 = load double, ptr %4592, align 8, !tbaa !43
  %4682 = fmul double %4668, %4681
  %4683 = fdiv double %4680, %4682
  %4684 = getelementptr <2 x double>, ptr %4610, i64 %4672
  %4685 = load double, ptr %4684, align 8, !tbaa !43
  %4686 = fmul double %4685, %4683
  store double %4686, ptr %4684, align 8, !tbaa !43
  %4687 = add nsw i64 %4672, 2
  %4688 = icmp eq i64 %4687, %4560
  br i1 %4688, label %4689, label %4671, !llvm.loop !143

4689:                                             ; preds = %4606, %4671, %4584, %4559, %4554
  br i1 %4555, label %4554, label %4690, !llvm.loop !144

4690:                                             ; preds = %4513, %4689, %4425
  %4691 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %4692 = and <2 x i64> %4691, %4424
  %4693 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4692)
  %4694 = icmp eq i64 %4693, 0
  %4695 = getelementptr inbounds nuw i8, ptr %4428, i64 2136
  br i1 %4694, label %4696, label %4714

4696:                                             ; preds = %4690
  %4697 = getelementptr inbounds nuw i8, ptr %4428, i64 2144
  %4698 = getelementptr inbounds nuw i8, ptr %4428, i64 2152
  %4699 = load ptr, ptr %4698, align 8, !tbaa !35
  %4700 = load ptr, ptr %4697, align 8, !tbaa !35
  store ptr %4700, ptr %4698, align 8, !tbaa !35
  %4701 = load ptr, ptr %4695, align 8, !tbaa !35
  store ptr %4701, ptr %4697, align 8, !tbaa !35
  store ptr %4699, ptr %4695, align 8, !tbaa !35
  %4702 = getelementptr inbounds nuw i8, ptr %4428, i64 2256
  %4703 = getelementptr inbounds nuw i8, ptr %4428, i64 2264
  %4704 = getelementptr inbounds nuw i8, ptr %4428, i64 2272
  %4705 = load ptr, ptr %4704, align 8, !tbaa !35
  %4706 = load ptr, ptr %4703, align 8, !tbaa !35
  store ptr %4706, ptr %4704, align 8, !tbaa !35
  %4707 = load ptr, ptr %4702, align 8, !tbaa !35
  store ptr %4707, ptr %4703, align 8, !tbaa !35
  store ptr %4705, ptr %4702, align 8, !tbaa !35
  %4708 = getelementptr inbounds nuw i8, ptr %4428, i64 2304
  %4709 = getelementptr inbounds nuw i8, ptr %4428, i64 2312
  %4710 = getelementptr inbounds nuw i8, ptr %4428, i64 2320
  %4711 = load ptr, ptr %4710, align 8, !tbaa !35
  %4712 = load ptr, ptr %4709, align 8, !tbaa !35
  store ptr %4712, ptr %4710, align 8, !tbaa !35
  %4713 = load ptr, ptr %4708, align 8, !tbaa !35
  store ptr %4713, ptr %4709, align 8, !tbaa !35
  store ptr %4711, ptr %4708, align 8, !tbaa !35
  br label %4779

4714:                                             ; preds = %4690
  %4715 = load ptr, ptr %4695, align 8, !tbaa !58
  %4716 = getelementptr inbounds nuw i8, ptr %4428, i64 2144
  %4717 = load ptr, ptr %4716, align 16, !tbaa !47
  %4718 = getelementptr inbounds nuw i8, ptr %4428, i64 2152
  %4719 = load ptr, ptr %4718, align 8, !tbaa !57
  %4720 = load i64, ptr %132, align 16, !tbaa !21
  %4721 = icmp sgt i64 %4720, 0
  br i1 %4721, label %4722, label %4735

4722:                                             ; preds = %4714, %4722
  %4723 = phi i64 [ %4733, %4722 ], [ 0, %4714 ]
  %4724 = getelementptr inbounds nuw <2 x double>, ptr %4719, i64 %4723
  %4725 = getelementptr inbounds nuw <2 x double>, ptr %4717, i64 %4723
  %4726 = load <2 x double>, ptr %4725, align 16, !tbaa !26
  %4727 = load <2 x double>, ptr %4724, align 16, !tbaa !26
  %4728 = select <2 x i1> %4396, <2 x double> %4727, <2 x double> %4726
  store <2 x double> %4728, ptr %4724, align 16, !tbaa !26
  %4729 = getelementptr inbounds nuw <2 x double>, ptr %4715, i64 %4723
  %4730 = load <2 x double>, ptr %4729, align 16, !tbaa !26
  %4731 = load <2 x double>, ptr %4725, align 16, !tbaa !26
  %4732 = select <2 x i1> %4396, <2 x double> %4731, <2 x double> %4730
  store <2 x double> %4732, ptr %4725, align 16, !tbaa !26
  %4733 = add nuw nsw i64 %4723, 1
  %4734 = icmp eq i64 %4733, %4720
  br i1 %4734, label %4735, label %4722, !llvm.loop !145

4735:                                             ; preds = %4722, %4714
  %4736 = getelementptr inbounds nuw i8, ptr %4428, i64 2256
  %4737 = load ptr, ptr %4736, align 16, !tbaa !125
  %4738 = getelementptr inbounds nuw i8, ptr %4428, i64 2264
  %4739 = load ptr, ptr %4738, align 8, !tbaa !51
  %4740 = getelementptr inbounds nuw i8, ptr %4428, i64 2272
  %4741 = load ptr, ptr %4740, align 16, !tbaa !62
  %4742 = load i64, ptr %133, align 8, !tbaa !22
  %4743 = icmp sgt i64 %4742, 0
  br i1 %4743, label %4744, label %4779

4744:                                             ; preds = %4735, %4744
  %4745 = phi i64 [ %4755, %4744 ], [ 0, %4735 ]
  %4746 = getelementptr inbounds nuw <2 x double>, ptr %4741, i64 %4745
  %4747 = getelementptr inbounds nuw <2 x double>, ptr %4739, i64 %4745
  %4748 = load <2 x double>, ptr %4747, align 16, !tbaa !26
  %4749 = load <2 x double>, ptr %4746, align 16, !tbaa !26
  %4750 = select <2 x i1> %4396, <2 x double> %4749, <2 x double> %4748
  store <2 x double> %4750, ptr %4746, align 16, !tbaa !26
  %4751 = getelementptr inbounds nuw <2 x double>, ptr %4737, i64 %4745
  %4752 = load <2 x double>, ptr %4751, align 16, !tbaa !26
  %4753 = load <2 x double>, ptr %4747, align 16, !tbaa !26
  %4754 = select <2 x i1> %4396, <2 x double> %4753, <2 x double> %4752
  store <2 x double> %4754, ptr %4747, align 16, !tbaa !26
  %4755 = add nuw nsw i64 %4745, 1
  %4756 = icmp eq i64 %4755, %4742
  br i1 %4756, label %4757, label %4744, !llvm.loop !145

4757:                                             ; preds = %4744
  %4758 = load i64, ptr %133, align 8, !tbaa !22
  %4759 = getelementptr inbounds nuw i8, ptr %4428, i64 2304
  %4760 = load ptr, ptr %4759, align 16, !tbaa !88
  %4761 = getelementptr inbounds nuw i8, ptr %4428, i64 2312
  %4762 = load ptr, ptr %4761, align 8, !tbaa !50
  %4763 = getelementptr inbounds nuw i8, ptr %4428, i64 2320
  %4764 = load ptr, ptr %4763, align 16, !tbaa !60
  %4765 = icmp sgt i64 %4758, 0
  br i1 %4765, label %4766, label %4779

4766:                                             ; preds = %4757, %4766
  %4767 = phi i64 [ %4777, %4766 ], [ 0, %4757 ]
  %4768 = getelementptr inbounds nuw <2 x double>, ptr %4764, i64 %4767
  %4769 = getelementptr inbounds nuw <2 x double>, ptr %4762, i64 %4767
  %4770 = load <2 x double>, ptr %4769, align 16, !tbaa !26
  %4771 = load <2 x double>, ptr %4768, align 16, !tbaa !26
  %4772 = select <2 x i1> %4396, <2 x double> %4771, <2 x double> %4770
  store <2 x double> %4772, ptr %4768, align 16, !tbaa !26
  %4773 = getelementptr inbounds nuw <2 x double>, ptr %4760, i64 %4767
  %4774 = load <2 x double>, ptr %4773, align 16, !tbaa !26
  %4775 = load <2 x double>, ptr %4769, align 16, !tbaa !26
  %4776 = select <2 x i1> %4396, <2 x double> %4775, <2 x double> %4774
  store <2 x double> %4776, ptr %4769, align 16, !tbaa !26
  %4777 = add nuw nsw i64 %4767, 1
  %4778 = icmp eq i64 %4777, %4758
  br i1 %4778, label %4779, label %4766, !llvm.loop !145

4779:                                             ; preds = %4766, %4735, %4757, %4696
  %4780 = getelementptr inbounds nuw i8, ptr %4428, i64 1184
  %4781 = getelementptr inbounds nuw i8, ptr %4428, i64 960
  %4782 = getelementptr inbounds nuw i8, ptr %4428, i64 736
  br label %4798

4783:                                             ; preds = %4798
  %4784 = getelementptr inbounds nuw i8, ptr %4428, i64 2096
  %4785 = getelementptr inbounds nuw i8, ptr %4428, i64 1520
  %4786 = load <2 x double>, ptr %4785, align 16, !tbaa !26
  %4787 = fcmp ogt <2 x double> %4786, zeroinitializer
  %4788 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %4789 = fcmp une <2 x double> %4788, splat (double 2.000000e+00)
  %4790 = and <2 x i1> %4787, %4789
  %4791 = select <2 x i1> %4790, <2 x i64> %4336, <2 x i64> zeroinitializer
  %4792 = load <2 x i64>, ptr %4784, align 16, !tbaa !26
  %4793 = and <2 x i64> %4792, %4424
  %4794 = or disjoint <2 x i64> %4791, %4793
  store <2 x i64> %4794, ptr %4784, align 16, !tbaa !26
  %4795 = add nuw nsw i64 %4426, 1
  %4796 = load i64, ptr %169, align 8, !tbaa !20
  %4797 = icmp slt i64 %4795, %4796
  br i1 %4797, label %4425, label %4819, !llvm.loop !146

4798:                                             ; preds = %4798, %4779
  %4799 = phi i64 [ 0, %4779 ], [ %4817, %4798 ]
  %4800 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4780, i64 0, i64 %4799
  %4801 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4781, i64 0, i64 %4799
  %4802 = load <2 x double>, ptr %4801, align 16, !tbaa !26
  %4803 = load <2 x double>, ptr %4800, align 16, !tbaa !26
  %4804 = select <2 x i1> %4396, <2 x double> %4803, <2 x double> %4802
  store <2 x double> %4804, ptr %4800, align 16, !tbaa !26
  %4805 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4782, i64 0, i64 %4799
  %4806 = load <2 x double>, ptr %4805, align 16, !tbaa !26
  %4807 = select <2 x i1> %4396, <2 x double> %4802, <2 x double> %4806
  store <2 x double> %4807, ptr %4801, align 16, !tbaa !26
  %4808 = or disjoint i64 %4799, 1
  %4809 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4780, i64 0, i64 %4808
  %4810 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4781, i64 0, i64 %4808
  %4811 = load <2 x double>, ptr %4810, align 16, !tbaa !26
  %4812 = load <2 x double>, ptr %4809, align 16, !tbaa !26
  %4813 = select <2 x i1> %4396, <2 x double> %4812, <2 x double> %4811
  store <2 x double> %4813, ptr %4809, align 16, !tbaa !26
  %4814 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4782, i64 0, i64 %4808
  %4815 = load <2 x double>, ptr %4814, align 16, !tbaa !26
  %4816 = select <2 x i1> %4396, <2 x double> %4811, <2 x double> %4815
  store <2 x double> %4816, ptr %4810, align 16, !tbaa !26
  %4817 = add nuw nsw i64 %4799, 2
  %4818 = icmp eq i64 %4817, 14
  br i1 %4818, label %4783, label %4798, !llvm.loop !147

4819:                                             ; preds = %4783
  %4820 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4821 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4822 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4823 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %4824 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4825 = fdiv <2 x double> %4822, %4033
  %4826 = icmp sgt i64 %4796, 0
  br label %4827

4827:                                             ; preds = %4395, %4819
  %4828 = phi <2 x double> [ %4825, %4819 ], [ %4043, %4395 ]
  %4829 = phi i1 [ %4826, %4819 ], [ false, %4395 ]
  %4830 = phi <2 x double> [ %4824, %4819 ], [ %4022, %4395 ]
  %4831 = phi <2 x double> [ %4823, %4819 ], [ %4324, %4395 ]
  %4832 = phi <2 x double> [ %4821, %4819 ], [ %4039, %4395 ]
  %4833 = phi <2 x double> [ %4820, %4819 ], [ %4037, %4395 ]
  %4834 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4835 = fadd <2 x double> %4834, %4833
  %4836 = select <2 x i1> %4396, <2 x double> %4834, <2 x double> %4835
  store <2 x double> %4836, ptr %149, align 16, !tbaa !26
  %4837 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %4838 = select <2 x i1> %4396, <2 x double> %4837, <2 x double> %4833
  store <2 x double> %4838, ptr %164, align 16, !tbaa !26
  %4839 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4840 = fadd <2 x double> %4839, splat (double 1.000000e+00)
  %4841 = select <2 x i1> %4396, <2 x double> %4839, <2 x double> %4840
  store <2 x double> %4841, ptr %136, align 16, !tbaa !26
  %4842 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %4843 = fcmp olt <2 x double> %4842, %4833
  %4844 = select <2 x i1> %4396, <2 x i1> splat (i1 true), <2 x i1> %4843
  %4845 = select <2 x i1> %4844, <2 x double> %4842, <2 x double> %4833
  store <2 x double> %4845, ptr %138, align 16, !tbaa !26
  %4846 = fcmp une <2 x double> %4832, zeroinitializer
  %4847 = fcmp ueq <2 x double> %4032, zeroinitializer
  %4848 = or <2 x i1> %4847, %4846
  %4849 = fcmp olt <2 x double> %4828, splat (double 1.800000e+00)
  %4850 = select <2 x i1> %4849, <2 x double> %4828, <2 x double> splat (double 1.800000e+00)
  %4851 = select <2 x i1> %4848, <2 x double> splat (double 1.800000e+00), <2 x double> %4850
  %4852 = fcmp ogt <2 x double> %4851, splat (double 2.000000e-01)
  %4853 = select <2 x i1> %4852, <2 x double> %4851, <2 x double> splat (double 2.000000e-01)
  %4854 = fmul <2 x double> %4833, %4853
  %4855 = fmul <2 x double> %4833, splat (double 4.000000e+00)
  %4856 = fcmp olt <2 x double> %4831, %4855
  %4857 = select <2 x i1> %4856, <2 x double> %4831, <2 x double> %4855
  %4858 = fcmp ogt <2 x double> %4854, %4857
  %4859 = select <2 x i1> %4858, <2 x double> %4854, <2 x double> %4857
  %4860 = select <2 x i1> %4396, <2 x double> %4831, <2 x double> zeroinitializer
  store <2 x double> %4860, ptr %172, align 16, !tbaa !26
  %4861 = select <2 x i1> %4396, <2 x double> %4830, <2 x double> zeroinitializer
  store <2 x double> %4861, ptr %174, align 16, !tbaa !26
  %4862 = load <2 x i64>, ptr %165, align 16, !tbaa !26
  %4863 = and <2 x i64> %4862, %4424
  store <2 x i64> %4863, ptr %165, align 16, !tbaa !26
  %4864 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %4865 = and <2 x i64> %4864, %4424
  store <2 x i64> %4865, ptr %166, align 16, !tbaa !26
  %4866 = load <2 x double>, ptr %210, align 16, !tbaa !26
  %4867 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %4868 = select <2 x i1> %4396, <2 x double> %4867, <2 x double> %4866
  store <2 x double> %4868, ptr %159, align 16, !tbaa !26
  br i1 %4829, label %4869, label %5334

4869:                                             ; preds = %4827, %5327
  %4870 = phi i64 [ %5329, %5327 ], [ 0, %4827 ]
  %4871 = phi <2 x double> [ %5328, %5327 ], [ %4859, %4827 ]
  %4872 = load ptr, ptr %142, align 8, !tbaa !28
  %4873 = getelementptr inbounds nuw %struct.Piece, ptr %4872, i64 %4870
  %4874 = getelementptr inbounds nuw i8, ptr %4873, i64 976
  %4875 = load <2 x double>, ptr %4874, align 16, !tbaa !26
  %4876 = getelementptr inbounds nuw i8, ptr %4873, i64 368
  %4877 = load <2 x double>, ptr %4876, align 16, !tbaa !26
  %4878 = fmul <2 x double> %4877, splat (double 1.001000e+00)
  %4879 = fcmp ole <2 x double> %4875, %4878
  %4880 = getelementptr inbounds nuw i8, ptr %4873, i64 400
  %4881 = load <2 x double>, ptr %4880, align 16, !tbaa !26
  %4882 = getelementptr inbounds nuw i8, ptr %4873, i64 1040
  %4883 = load <2 x double>, ptr %4882, align 16, !tbaa !26
  %4884 = fsub <2 x double> %4881, %4883
  %4885 = fmul <2 x double> %4881, splat (double 1.000000e-04)
  %4886 = fcmp ole <2 x double> %4884, %4885
  %4887 = getelementptr inbounds nuw i8, ptr %4873, i64 2080
  %4888 = load <2 x i64>, ptr %4887, align 16, !tbaa !26
  %4889 = and <2 x i64> %4888, %4336
  %4890 = getelementptr inbounds nuw i8, ptr %4873, i64 1920
  %4891 = load <2 x double>, ptr %4890, align 16, !tbaa !26
  %4892 = fcmp oeq <2 x double> %4891, zeroinitializer
  %4893 = and <2 x i1> %4879, %4892
  %4894 = fcmp oeq <2 x double> %4891, splat (double 1.000000e+00)
  %4895 = and <2 x i1> %4886, %4894
  %4896 = or <2 x i1> %4893, %4895
  %4897 = select <2 x i1> %4896, <2 x i64> %4889, <2 x i64> zeroinitializer
  %4898 = fadd <2 x double> %4891, splat (double 1.000000e+00)
  %4899 = icmp eq <2 x i64> %4897, zeroinitializer
  %4900 = select <2 x i1> %4899, <2 x double> %4891, <2 x double> %4898
  store <2 x double> %4900, ptr %4890, align 16, !tbaa !26
  %4901 = getelementptr inbounds nuw i8, ptr %4873, i64 2096
  %4902 = load <2 x i64>, ptr %4901, align 16, !tbaa !26
  %4903 = or <2 x i64> %4897, %4902
  store <2 x i64> %4903, ptr %4901, align 16, !tbaa !26
  %4904 = getelementptr inbounds nuw i8, ptr %4873, i64 224
  %4905 = load <2 x double>, ptr %4904, align 16, !tbaa !26
  %4906 = getelementptr inbounds nuw i8, ptr %4873, i64 1504
  %4907 = load <2 x double>, ptr %4906, align 16, !tbaa !26
  %4908 = getelementptr inbounds nuw i8, ptr %4873, i64 1520
  %4909 = load <2 x double>, ptr %4908, align 16, !tbaa !26
  %4910 = fadd <2 x double> %4907, %4909
  %4911 = fcmp ogt <2 x double> %4910, zeroinitializer
  %4912 = xor <2 x i64> %4888, splat (i64 -1)
  %4913 = and <2 x i64> %4336, %4912
  %4914 = fcmp une <2 x double> %4905, zeroinitializer
  %4915 = or <2 x i1> %4914, %4911
  %4916 = getelementptr inbounds nuw i8, ptr %4873, i64 992
  %4917 = load <2 x double>, ptr %4916, align 16, !tbaa !26
  %4918 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4919 = fmul <2 x double> %4905, %4918
  %4920 = fcmp ogt <2 x double> %4919, splat (double 0x3E7AD7F29ABCAF48)
  %4921 = select <2 x i1> %4920, <2 x double> %4919, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4922 = fcmp ole <2 x double> %4917, %4921
  %4923 = select <2 x i1> %4922, <2 x i1> %4915, <2 x i1> zeroinitializer
  %4924 = select <2 x i1> %4923, <2 x i64> %4913, <2 x i64> zeroinitializer
  %4925 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4924)
  %4926 = icmp eq i64 %4925, 0
  br i1 %4926, label %5327, label %4927

4927:                                             ; preds = %4869
  %4928 = load i64, ptr %132, align 16, !tbaa !21
  %4929 = load i64, ptr %133, align 8, !tbaa !22
  %4930 = getelementptr inbounds nuw i8, ptr %4873, i64 960
  %4931 = getelementptr inbounds nuw i8, ptr %4873, i64 1168
  %4932 = load <2 x double>, ptr %4931, align 16, !tbaa !26
  %4933 = getelementptr inbounds nuw i8, ptr %4873, i64 1488
  %4934 = load <2 x double>, ptr %4933, align 16, !tbaa !26
  %4935 = getelementptr inbounds nuw i8, ptr %4873, i64 208
  %4936 = load <2 x double>, ptr %4935, align 16, !tbaa !26
  %4937 = getelementptr inbounds nuw i8, ptr %4873, i64 2176
  %4938 = load ptr, ptr %4937, align 16, !tbaa !48
  %4939 = add nsw i64 %4928, -1
  %4940 = getelementptr inbounds <2 x double>, ptr %4938, i64 %4939
  %4941 = load <2 x double>, ptr %4940, align 16, !tbaa !26
  %4942 = fmul <2 x double> %4936, %4941
  %4943 = fneg <2 x double> %4917
  %4944 = fdiv <2 x double> %4943, %4942
  %4945 = fcmp ogt <2 x double> %4944, splat (double 0x3E7AD7F29ABCAF48)
  %4946 = select <2 x i1> %4945, <2 x double> %4944, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4947 = load <2 x double>, ptr %4873, align 16, !tbaa !26
  %4948 = fsub <2 x double> %4947, %4946
  %4949 = getelementptr inbounds nuw i8, ptr %4873, i64 640
  %4950 = load <2 x double>, ptr %4949, align 16, !tbaa !26
  %4951 = getelementptr inbounds nuw i8, ptr %4873, i64 656
  %4952 = load <2 x double>, ptr %4951, align 16, !tbaa !26
  %4953 = getelementptr inbounds nuw i8, ptr %4873, i64 672
  %4954 = load <2 x double>, ptr %4953, align 16, !tbaa !26
  %4955 = getelementptr inbounds nuw i8, ptr %4873, i64 688
  %4956 = load <2 x double>, ptr %4955, align 16, !tbaa !26
  %4957 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4948, <2 x double> %4956, <2 x double> %4954)
  %4958 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4948, <2 x double> %4957, <2 x double> %4952)
  %4959 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4948, <2 x double> %4958, <2 x double> %4950)
  %4960 = fsub <2 x double> %4932, %4959
  %4961 = getelementptr inbounds nuw i8, ptr %4873, i64 2144
  %4962 = load ptr, ptr %4961, align 16, !tbaa !47
  %4963 = getelementptr inbounds <2 x double>, ptr %4962, i64 %4939
  %4964 = load <2 x double>, ptr %4963, align 16, !tbaa !26
  %4965 = getelementptr inbounds nuw i8, ptr %4873, i64 2128
  %4966 = load i64, ptr %4965, align 16, !tbaa !31
  %4967 = icmp sgt i64 %4928, %4966
  br i1 %4967, label %4976, label %4968

4968:                                             ; preds = %4927
  %4969 = getelementptr inbounds nuw i8, ptr %4873, i64 160
  %4970 = load <2 x double>, ptr %4969, align 16, !tbaa !26
  %4971 = getelementptr inbounds nuw i8, ptr %4873, i64 2152
  %4972 = load ptr, ptr %4971, align 8, !tbaa !57
  %4973 = getelementptr inbounds <2 x double>, ptr %4972, i64 %4939
  %4974 = load <2 x double>, ptr %4973, align 16, !tbaa !26
  %4975 = fmul <2 x double> %4974, %4970
  br label %4996

4976:                                             ; preds = %4927
  %4977 = getelementptr inbounds nuw i8, ptr %4873, i64 96
  %4978 = load <2 x double>, ptr %4977, align 16, !tbaa !26
  %4979 = getelementptr inbounds nuw i8, ptr %4873, i64 112
  %4980 = load <2 x double>, ptr %4979, align 16, !tbaa !26
  %4981 = getelementptr inbounds nuw i8, ptr %4873, i64 128
  %4982 = load <2 x double>, ptr %4981, align 16, !tbaa !26
  %4983 = fmul <2 x double> %4964, %4982
  %4984 = fmul <2 x double> %4983, splat (double 0x3FD5555555555555)
  %4985 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4980, <2 x double> splat (double 5.000000e-01), <2 x double> %4984)
  %4986 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4964, <2 x double> %4985, <2 x double> %4978)
  %4987 = getelementptr inbounds nuw i8, ptr %4873, i64 2152
  %4988 = load ptr, ptr %4987, align 8, !tbaa !57
  %4989 = getelementptr inbounds <2 x double>, ptr %4988, i64 %4939
  %4990 = load <2 x double>, ptr %4989, align 16, !tbaa !26
  %4991 = fmul <2 x double> %4990, %4982
  %4992 = fmul <2 x double> %4991, splat (double 0x3FD5555555555555)
  %4993 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4980, <2 x double> splat (double 5.000000e-01), <2 x double> %4992)
  %4994 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4990, <2 x double> %4993, <2 x double> %4978)
  %4995 = fmul <2 x double> %4990, %4994
  br label %4996

4996:                                             ; preds = %4976, %4968
  %4997 = phi ptr [ %4988, %4976 ], [ %4972, %4968 ]
  %4998 = phi <2 x double> [ %4986, %4976 ], [ %4970, %4968 ]
  %4999 = phi <2 x double> [ %4995, %4976 ], [ %4975, %4968 ]
  %5000 = phi ptr [ %4987, %4976 ], [ %4971, %4968 ]
  %5001 = sitofp i64 %4929 to double
  %5002 = insertelement <2 x double> poison, double %5001, i64 0
  %5003 = shufflevector <2 x double> %5002, <2 x double> poison, <2 x i32> zeroinitializer
  %5004 = fmul <2 x double> %4964, %4998
  %5005 = fdiv <2 x double> %4946, %5003
  %5006 = getelementptr i8, ptr %4962, i64 -16
  %5007 = getelementptr i8, ptr %4938, i64 -16
  %5008 = icmp sgt i64 %4928, 0
  br i1 %5008, label %5009, label %5110

5009:                                             ; preds = %4996
  %5010 = fmul <2 x double> %4964, %4998
  %5011 = getelementptr inbounds nuw i8, ptr %4873, i64 160
  %5012 = getelementptr inbounds nuw i8, ptr %4873, i64 96
  %5013 = getelementptr inbounds nuw i8, ptr %4873, i64 112
  %5014 = getelementptr inbounds nuw i8, ptr %4873, i64 128
  %5015 = getelementptr inbounds nuw i8, ptr %4873, i64 384
  %5016 = getelementptr inbounds nuw i8, ptr %4873, i64 2224
  %5017 = icmp eq <2 x i64> %4924, zeroinitializer
  br label %5018

5018:                                             ; preds = %5009, %5097
  %5019 = phi <2 x double> [ %4964, %5009 ], [ %5078, %5097 ]
  %5020 = phi <2 x double> [ %5010, %5009 ], [ %5077, %5097 ]
  %5021 = phi <2 x double> [ %4959, %5009 ], [ %5079, %5097 ]
  %5022 = phi <2 x double> [ %4941, %5009 ], [ %5080, %5097 ]
  %5023 = phi i64 [ %4939, %5009 ], [ %5103, %5097 ]
  %5024 = icmp eq i64 %5023, 0
  br i1 %5024, label %5025, label %5029

5025:                                             ; preds = %5018
  %5026 = fdiv <2 x double> zeroinitializer, %5021
  %5027 = fsub <2 x double> %5020, %5020
  %5028 = fmul <2 x double> %5026, %5027
  br label %5074

5029:                                             ; preds = %5018
  %5030 = getelementptr <2 x double>, ptr %5006, i64 %5023
  %5031 = load <2 x double>, ptr %5030, align 16, !tbaa !26
  %5032 = load i64, ptr %4965, align 16, !tbaa !31
  %5033 = icmp sgt i64 %5023, %5032
  br i1 %5033, label %5036, label %5034

5034:                                             ; preds = %5029
  %5035 = load <2 x double>, ptr %5011, align 16, !tbaa !26
  br label %5044

5036:                                             ; preds = %5029
  %5037 = load <2 x double>, ptr %5012, align 16, !tbaa !26
  %5038 = load <2 x double>, ptr %5013, align 16, !tbaa !26
  %5039 = load <2 x double>, ptr %5014, align 16, !tbaa !26
  %5040 = fmul <2 x double> %5031, %5039
  %5041 = fmul <2 x double> %5040, splat (double 0x3FD5555555555555)
  %5042 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5038, <2 x double> splat (double 5.000000e-01), <2 x double> %5041)
  %5043 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5031, <2 x double> %5042, <2 x double> %5037)
  br label %5044

5044:                                             ; preds = %5034, %5036
  %5045 = phi <2 x double> [ %5043, %5036 ], [ %5035, %5034 ]
  %5046 = fmul <2 x double> %5031, %5045
  %5047 = icmp slt i64 %5023, %5032
  br i1 %5047, label %5048, label %5055

5048:                                             ; preds = %5044
  %5049 = load ptr, ptr %5016, align 16, !tbaa !73
  %5050 = getelementptr inbounds nuw <2 x double>, ptr %5049, i64 %5023
  %5051 = load <2 x double>, ptr %5050, align 16, !tbaa !26
  %5052 = load <2 x double>, ptr %5015, align 16, !tbaa !26
  %5053 = fmul <2 x double> %5051, %5052
  %5054 = fmul <2 x double> %5051, %5052
  br label %5064

5055:                                             ; preds = %5044
  %5056 = load <2 x double>, ptr %5015, align 16, !tbaa !26
  %5057 = load ptr, ptr %5016, align 16, !tbaa !73
  %5058 = getelementptr inbounds nuw <2 x double>, ptr %5057, i64 %5023
  %5059 = load <2 x double>, ptr %5058, align 16, !tbaa !26
  %5060 = fsub <2 x double> %4959, %5056
  %5061 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5059, <2 x double> %5060, <2 x double> %5056)
  %5062 = fsub <2 x double> %4932, %5056
  %5063 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5059, <2 x double> %5062, <2 x double> %5056)
  br label %5064

5064:                                             ; preds = %5055, %5048
  %5065 = phi <2 x double> [ %5053, %5048 ], [ %5061, %5055 ]
  %5066 = phi <2 x double> [ %5054, %5048 ], [ %5063, %5055 ]
  %5067 = fsub <2 x double> %5066, %5065
  %5068 = fsub <2 x double> %5021, %5065
  %5069 = fdiv <2 x double> %5067, %5068
  %5070 = fsub <2 x double> %5046, %5020
  %5071 = fmul <2 x double> %5070, %5069
  %5072 = getelementptr <2 x double>, ptr %5007, i64 %5023
  %5073 = load <2 x double>, ptr %5072, align 16, !tbaa !26
  br label %5074

5074:                                             ; preds = %5064, %5025
  %5075 = phi <2 x double> [ %5071, %5064 ], [ %5028, %5025 ]
  %5076 = phi <2 x double> [ %5069, %5064 ], [ %5026, %5025 ]
  %5077 = phi <2 x double> [ %5046, %5064 ], [ %5020, %5025 ]
  %5078 = phi <2 x double> [ %5031, %5064 ], [ %5019, %5025 ]
  %5079 = phi <2 x double> [ %5065, %5064 ], [ zeroinitializer, %5025 ]
  %5080 = phi <2 x double> [ %5073, %5064 ], [ %5022, %5025 ]
  %5081 = getelementptr inbounds nuw <2 x double>, ptr %4938, i64 %5023
  %5082 = fsub <2 x double> %5080, %5022
  %5083 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5082, <2 x double> %5076, <2 x double> %5022)
  %5084 = load <2 x double>, ptr %5081, align 16, !tbaa !26
  %5085 = select <2 x i1> %5017, <2 x double> %5084, <2 x double> %5083
  store <2 x double> %5085, ptr %5081, align 16, !tbaa !26
  %5086 = getelementptr inbounds nuw <2 x double>, ptr %4962, i64 %5023
  %5087 = load i64, ptr %4965, align 16, !tbaa !31
  %5088 = icmp slt i64 %5023, %5087
  br i1 %5088, label %5089, label %5091

5089:                                             ; preds = %5074
  %5090 = load <2 x double>, ptr %5011, align 16, !tbaa !26
  br label %5097

5091:                                             ; preds = %5074
  %5092 = load <2 x double>, ptr %5012, align 16, !tbaa !26
  %5093 = load <2 x double>, ptr %5013, align 16, !tbaa !26
  %5094 = load <2 x double>, ptr %5014, align 16, !tbaa !26
  %5095 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5019, <2 x double> %5094, <2 x double> %5093)
  %5096 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5019, <2 x double> %5095, <2 x double> %5092)
  br label %5097

5097:                                             ; preds = %5091, %5089
  %5098 = phi <2 x double> [ %5090, %5089 ], [ %5096, %5091 ]
  %5099 = fdiv <2 x double> %5075, %5098
  %5100 = fadd <2 x double> %5019, %5099
  %5101 = load <2 x double>, ptr %5086, align 16, !tbaa !26
  %5102 = select <2 x i1> %5017, <2 x double> %5101, <2 x double> %5100
  store <2 x double> %5102, ptr %5086, align 16, !tbaa !26
  %5103 = add nsw i64 %5023, -1
  %5104 = icmp sgt i64 %5023, 0
  br i1 %5104, label %5018, label %5105, !llvm.loop !148

5105:                                             ; preds = %5097
  %5106 = load ptr, ptr %5000, align 8, !tbaa !57
  %5107 = load i64, ptr %132, align 16, !tbaa !21
  %5108 = load i64, ptr %4965, align 16, !tbaa !31
  %5109 = add nsw i64 %5107, -1
  br label %5110

5110:                                             ; preds = %5105, %4996
  %5111 = phi i64 [ %5109, %5105 ], [ %4939, %4996 ]
  %5112 = phi i64 [ %5108, %5105 ], [ %4966, %4996 ]
  %5113 = phi i64 [ %5107, %5105 ], [ %4928, %4996 ]
  %5114 = phi ptr [ %5106, %5105 ], [ %4997, %4996 ]
  %5115 = getelementptr inbounds <2 x double>, ptr %5114, i64 %5111
  %5116 = load <2 x double>, ptr %5115, align 16, !tbaa !26
  %5117 = icmp sgt i64 %5113, %5112
  br i1 %5117, label %5121, label %5118

5118:                                             ; preds = %5110
  %5119 = getelementptr inbounds nuw i8, ptr %4873, i64 160
  %5120 = load <2 x double>, ptr %5119, align 16, !tbaa !26
  br label %5132

5121:                                             ; preds = %5110
  %5122 = getelementptr inbounds nuw i8, ptr %4873, i64 96
  %5123 = load <2 x double>, ptr %5122, align 16, !tbaa !26
  %5124 = getelementptr inbounds nuw i8, ptr %4873, i64 112
  %5125 = load <2 x double>, ptr %5124, align 16, !tbaa !26
  %5126 = getelementptr inbounds nuw i8, ptr %4873, i64 128
  %5127 = load <2 x double>, ptr %5126, align 16, !tbaa !26
  %5128 = fmul <2 x double> %5116, %5127
  %5129 = fmul <2 x double> %5128, splat (double 0x3FD5555555555555)
  %5130 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5125, <2 x double> splat (double 5.000000e-01), <2 x double> %5129)
  %5131 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5116, <2 x double> %5130, <2 x double> %5123)
  br label %5132

5132:                                             ; preds = %5121, %5118
  %5133 = phi <2 x double> [ %5120, %5118 ], [ %5131, %5121 ]
  %5134 = getelementptr i8, ptr %5114, i64 -16
  %5135 = icmp sgt i64 %5113, 0
  br i1 %5135, label %5136, label %5145

5136:                                             ; preds = %5132
  %5137 = fmul <2 x double> %5116, %5133
  %5138 = getelementptr inbounds nuw i8, ptr %4873, i64 160
  %5139 = getelementptr inbounds nuw i8, ptr %4873, i64 96
  %5140 = getelementptr inbounds nuw i8, ptr %4873, i64 112
  %5141 = getelementptr inbounds nuw i8, ptr %4873, i64 128
  %5142 = getelementptr inbounds nuw i8, ptr %4873, i64 384
  %5143 = getelementptr inbounds nuw i8, ptr %4873, i64 2224
  %5144 = icmp eq <2 x i64> %4924, zeroinitializer
  br label %5153

5145:                                             ; preds = %5217, %5132
  %5146 = icmp sgt i64 %4929, 0
  br i1 %5146, label %5147, label %5225

5147:                                             ; preds = %5145
  %5148 = getelementptr inbounds nuw i8, ptr %4873, i64 2312
  %5149 = icmp eq <2 x i64> %4924, zeroinitializer
  %5150 = getelementptr inbounds nuw i8, ptr %4873, i64 2320
  %5151 = getelementptr inbounds nuw i8, ptr %4873, i64 2264
  %5152 = getelementptr inbounds nuw i8, ptr %4873, i64 2272
  br label %5296

5153:                                             ; preds = %5136, %5217
  %5154 = phi <2 x double> [ %5116, %5136 ], [ %5200, %5217 ]
  %5155 = phi <2 x double> [ %5137, %5136 ], [ %5201, %5217 ]
  %5156 = phi <2 x double> [ %4959, %5136 ], [ %5199, %5217 ]
  %5157 = phi i64 [ %5111, %5136 ], [ %5223, %5217 ]
  %5158 = icmp eq i64 %5157, 0
  %5159 = load i64, ptr %4965, align 16, !tbaa !31
  br i1 %5158, label %5198, label %5160

5160:                                             ; preds = %5153
  %5161 = getelementptr <2 x double>, ptr %5134, i64 %5157
  %5162 = load <2 x double>, ptr %5161, align 16, !tbaa !26
  %5163 = icmp sgt i64 %5157, %5159
  br i1 %5163, label %5166, label %5164

5164:                                             ; preds = %5160
  %5165 = load <2 x double>, ptr %5138, align 16, !tbaa !26
  br label %5174

5166:                                             ; preds = %5160
  %5167 = load <2 x double>, ptr %5139, align 16, !tbaa !26
  %5168 = load <2 x double>, ptr %5140, align 16, !tbaa !26
  %5169 = load <2 x double>, ptr %5141, align 16, !tbaa !26
  %5170 = fmul <2 x double> %5162, %5169
  %5171 = fmul <2 x double> %5170, splat (double 0x3FD5555555555555)
  %5172 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5168, <2 x double> splat (double 5.000000e-01), <2 x double> %5171)
  %5173 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5162, <2 x double> %5172, <2 x double> %5167)
  br label %5174

5174:                                             ; preds = %5164, %5166
  %5175 = phi <2 x double> [ %5173, %5166 ], [ %5165, %5164 ]
  %5176 = fmul <2 x double> %5162, %5175
  %5177 = icmp slt i64 %5157, %5159
  br i1 %5177, label %5178, label %5185

5178:                                             ; preds = %5174
  %5179 = load ptr, ptr %5143, align 16, !tbaa !73
  %5180 = getelementptr inbounds nuw <2 x double>, ptr %5179, i64 %5157
  %5181 = load <2 x double>, ptr %5180, align 16, !tbaa !26
  %5182 = load <2 x double>, ptr %5142, align 16, !tbaa !26
  %5183 = fmul <2 x double> %5181, %5182
  %5184 = fmul <2 x double> %5181, %5182
  br label %5194

5185:                                             ; preds = %5174
  %5186 = load <2 x double>, ptr %5142, align 16, !tbaa !26
  %5187 = load ptr, ptr %5143, align 16, !tbaa !73
  %5188 = getelementptr inbounds nuw <2 x double>, ptr %5187, i64 %5157
  %5189 = load <2 x double>, ptr %5188, align 16, !tbaa !26
  %5190 = fsub <2 x double> %4959, %5186
  %5191 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5189, <2 x double> %5190, <2 x double> %5186)
  %5192 = fsub <2 x double> %4932, %5186
  %5193 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5189, <2 x double> %5192, <2 x double> %5186)
  br label %5194

5194:                                             ; preds = %5185, %5178
  %5195 = phi <2 x double> [ %5183, %5178 ], [ %5191, %5185 ]
  %5196 = phi <2 x double> [ %5184, %5178 ], [ %5193, %5185 ]
  %5197 = fsub <2 x double> %5196, %5195
  br label %5198

5198:                                             ; preds = %5153, %5194
  %5199 = phi <2 x double> [ %5195, %5194 ], [ zeroinitializer, %5153 ]
  %5200 = phi <2 x double> [ %5162, %5194 ], [ %5154, %5153 ]
  %5201 = phi <2 x double> [ %5176, %5194 ], [ %5155, %5153 ]
  %5202 = phi <2 x double> [ %5197, %5194 ], [ zeroinitializer, %5153 ]
  %5203 = fsub <2 x double> %5156, %5199
  %5204 = fdiv <2 x double> %5202, %5203
  %5205 = fsub <2 x double> %5201, %5155
  %5206 = fmul <2 x double> %5205, %5204
  %5207 = getelementptr inbounds nuw <2 x double>, ptr %5114, i64 %5157
  %5208 = icmp slt i64 %5157, %5159
  br i1 %5208, label %5209, label %5211

5209:                                             ; preds = %5198
  %5210 = load <2 x double>, ptr %5138, align 16, !tbaa !26
  br label %5217

5211:                                             ; preds = %5198
  %5212 = load <2 x double>, ptr %5139, align 16, !tbaa !26
  %5213 = load <2 x double>, ptr %5140, align 16, !tbaa !26
  %5214 = load <2 x double>, ptr %5141, align 16, !tbaa !26
  %5215 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5154, <2 x double> %5214, <2 x double> %5213)
  %5216 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5154, <2 x double> %5215, <2 x double> %5212)
  br label %5217

5217:                                             ; preds = %5211, %5209
  %5218 = phi <2 x double> [ %5210, %5209 ], [ %5216, %5211 ]
  %5219 = fdiv <2 x double> %5206, %5218
  %5220 = fadd <2 x double> %5154, %5219
  %5221 = load <2 x double>, ptr %5207, align 16, !tbaa !26
  %5222 = select <2 x i1> %5144, <2 x double> %5221, <2 x double> %5220
  store <2 x double> %5222, ptr %5207, align 16, !tbaa !26
  %5223 = add nsw i64 %5157, -1
  %5224 = icmp sgt i64 %5157, 0
  br i1 %5224, label %5153, label %5145, !llvm.loop !148

5225:                                             ; preds = %5296, %5145
  %5226 = getelementptr inbounds nuw i8, ptr %4873, i64 2312
  %5227 = load ptr, ptr %5226, align 8, !tbaa !50
  %5228 = getelementptr inbounds <2 x double>, ptr %5227, i64 %4929
  %5229 = getelementptr inbounds nuw i8, ptr %4873, i64 352
  %5230 = load <2 x double>, ptr %5229, align 16, !tbaa !26
  %5231 = load <2 x double>, ptr %5228, align 16, !tbaa !26
  %5232 = icmp eq <2 x i64> %4924, zeroinitializer
  %5233 = select <2 x i1> %5232, <2 x double> %5231, <2 x double> %5230
  store <2 x double> %5233, ptr %5228, align 16, !tbaa !26
  %5234 = getelementptr inbounds nuw i8, ptr %4873, i64 2320
  %5235 = load ptr, ptr %5234, align 16, !tbaa !60
  %5236 = getelementptr inbounds <2 x double>, ptr %5235, i64 %4929
  %5237 = load <2 x double>, ptr %5229, align 16, !tbaa !26
  %5238 = load <2 x double>, ptr %5236, align 16, !tbaa !26
  %5239 = select <2 x i1> %5232, <2 x double> %5238, <2 x double> %5237
  store <2 x double> %5239, ptr %5236, align 16, !tbaa !26
  %5240 = getelementptr inbounds nuw i8, ptr %4873, i64 1184
  %5241 = fneg <2 x double> %4960
  %5242 = getelementptr inbounds nuw i8, ptr %4873, i64 192
  %5243 = load <2 x double>, ptr %4930, align 16, !tbaa !26
  %5244 = select <2 x i1> %5232, <2 x double> %5243, <2 x double> %4948
  store <2 x double> %5244, ptr %4930, align 16, !tbaa !26
  %5245 = getelementptr inbounds nuw i8, ptr %4873, i64 976
  %5246 = load <2 x double>, ptr %5245, align 16, !tbaa !26
  %5247 = select <2 x i1> %5232, <2 x double> %5246, <2 x double> %4959
  store <2 x double> %5247, ptr %5245, align 16, !tbaa !26
  %5248 = getelementptr inbounds nuw i8, ptr %4873, i64 1168
  %5249 = load <2 x double>, ptr %5248, align 16, !tbaa !26
  %5250 = select <2 x i1> %5232, <2 x double> %5249, <2 x double> %4959
  store <2 x double> %5250, ptr %5248, align 16, !tbaa !26
  %5251 = getelementptr inbounds nuw i8, ptr %4873, i64 1008
  %5252 = load <2 x double>, ptr %5251, align 16, !tbaa !26
  %5253 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5241, <2 x double> %4942, <2 x double> %5252)
  %5254 = select <2 x i1> %5232, <2 x double> %5252, <2 x double> %5253
  store <2 x double> %5254, ptr %5251, align 16, !tbaa !26
  %5255 = getelementptr inbounds nuw i8, ptr %4873, i64 992
  %5256 = load <2 x double>, ptr %5255, align 16, !tbaa !26
  %5257 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4960, <2 x double> %4942, <2 x double> %5256)
  %5258 = select <2 x i1> %5232, <2 x double> %5256, <2 x double> %5257
  store <2 x double> %5258, ptr %5255, align 16, !tbaa !26
  %5259 = getelementptr inbounds nuw i8, ptr %4873, i64 1072
  %5260 = load <2 x double>, ptr %5259, align 16, !tbaa !26
  %5261 = load <2 x double>, ptr %5242, align 16, !tbaa !26
  %5262 = fneg <2 x double> %5261
  %5263 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5262, <2 x double> %4934, <2 x double> %5004)
  %5264 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4960, <2 x double> %5263, <2 x double> %5260)
  %5265 = select <2 x i1> %5232, <2 x double> %5260, <2 x double> %5264
  store <2 x double> %5265, ptr %5259, align 16, !tbaa !26
  %5266 = load <2 x double>, ptr %5240, align 16, !tbaa !26
  %5267 = select <2 x i1> %5232, <2 x double> %5266, <2 x double> %4948
  store <2 x double> %5267, ptr %5240, align 16, !tbaa !26
  %5268 = getelementptr inbounds nuw i8, ptr %4873, i64 1200
  %5269 = load <2 x double>, ptr %5268, align 16, !tbaa !26
  %5270 = select <2 x i1> %5232, <2 x double> %5269, <2 x double> %4959
  store <2 x double> %5270, ptr %5268, align 16, !tbaa !26
  %5271 = getelementptr inbounds nuw i8, ptr %4873, i64 1392
  %5272 = load <2 x double>, ptr %5271, align 16, !tbaa !26
  %5273 = select <2 x i1> %5232, <2 x double> %5272, <2 x double> %4959
  store <2 x double> %5273, ptr %5271, align 16, !tbaa !26
  %5274 = getelementptr inbounds nuw i8, ptr %4873, i64 1232
  %5275 = load <2 x double>, ptr %5274, align 16, !tbaa !26
  %5276 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5241, <2 x double> %4942, <2 x double> %5275)
  %5277 = select <2 x i1> %5232, <2 x double> %5275, <2 x double> %5276
  store <2 x double> %5277, ptr %5274, align 16, !tbaa !26
  %5278 = getelementptr inbounds nuw i8, ptr %4873, i64 1216
  %5279 = load <2 x double>, ptr %5278, align 16, !tbaa !26
  %5280 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4960, <2 x double> %4942, <2 x double> %5279)
  %5281 = select <2 x i1> %5232, <2 x double> %5279, <2 x double> %5280
  store <2 x double> %5281, ptr %5278, align 16, !tbaa !26
  %5282 = getelementptr inbounds nuw i8, ptr %4873, i64 1296
  %5283 = load <2 x double>, ptr %5282, align 16, !tbaa !26
  %5284 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5262, <2 x double> %4934, <2 x double> %4999)
  %5285 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4960, <2 x double> %5284, <2 x double> %5283)
  %5286 = select <2 x i1> %5232, <2 x double> %5283, <2 x double> %5285
  store <2 x double> %5286, ptr %5282, align 16, !tbaa !26
  %5287 = load <2 x i64>, ptr %4887, align 16, !tbaa !26
  %5288 = or <2 x i64> %5287, %4924
  store <2 x i64> %5288, ptr %4887, align 16, !tbaa !26
  %5289 = load <2 x double>, ptr %225, align 16, !tbaa !26
  %5290 = fmul <2 x double> %5289, splat (double 4.000000e+01)
  %5291 = fcmp olt <2 x double> %4871, %5290
  %5292 = select <2 x i1> %5291, <2 x double> %4871, <2 x double> %5290
  %5293 = icmp ne <2 x i64> %4924, zeroinitializer
  %5294 = select <2 x i1> %4914, <2 x i1> %5293, <2 x i1> zeroinitializer
  %5295 = select <2 x i1> %5294, <2 x double> %5292, <2 x double> %4871
  br label %5327

5296:                                             ; preds = %5147, %5296
  %5297 = phi i64 [ 0, %5147 ], [ %5325, %5296 ]
  %5298 = uitofp nneg i64 %5297 to double
  %5299 = insertelement <2 x double> poison, double %5298, i64 0
  %5300 = shufflevector <2 x double> %5299, <2 x double> poison, <2 x i32> zeroinitializer
  %5301 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5300, <2 x double> %5005, <2 x double> %4948)
  %5302 = load <2 x double>, ptr %4949, align 16, !tbaa !26
  %5303 = load <2 x double>, ptr %4951, align 16, !tbaa !26
  %5304 = load <2 x double>, ptr %4953, align 16, !tbaa !26
  %5305 = load <2 x double>, ptr %4955, align 16, !tbaa !26
  %5306 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5301, <2 x double> %5305, <2 x double> %5304)
  %5307 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5301, <2 x double> %5306, <2 x double> %5303)
  %5308 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5301, <2 x double> %5307, <2 x double> %5302)
  %5309 = load ptr, ptr %5148, align 8, !tbaa !50
  %5310 = getelementptr inbounds nuw <2 x double>, ptr %5309, i64 %5297
  %5311 = load <2 x double>, ptr %5310, align 16, !tbaa !26
  %5312 = select <2 x i1> %5149, <2 x double> %5311, <2 x double> %5308
  store <2 x double> %5312, ptr %5310, align 16, !tbaa !26
  %5313 = load ptr, ptr %5150, align 16, !tbaa !60
  %5314 = getelementptr inbounds nuw <2 x double>, ptr %5313, i64 %5297
  %5315 = load <2 x double>, ptr %5314, align 16, !tbaa !26
  %5316 = select <2 x i1> %5149, <2 x double> %5315, <2 x double> %5308
  store <2 x double> %5316, ptr %5314, align 16, !tbaa !26
  %5317 = load ptr, ptr %5151, align 8, !tbaa !51
  %5318 = getelementptr inbounds nuw <2 x double>, ptr %5317, i64 %5297
  %5319 = load <2 x double>, ptr %5318, align 16, !tbaa !26
  %5320 = select <2 x i1> %5149, <2 x double> %5319, <2 x double> %4934
  store <2 x double> %5320, ptr %5318, align 16, !tbaa !26
  %5321 = load ptr, ptr %5152, align 16, !tbaa !62
  %5322 = getelementptr inbounds nuw <2 x double>, ptr %5321, i64 %5297
  %5323 = load <2 x double>, ptr %5322, align 16, !tbaa !26
  %5324 = select <2 x i1> %5149, <2 x double> %5323, <2 x double> %4934
  store <2 x double> %5324, ptr %5322, align 16, !tbaa !26
  %5325 = add nuw nsw i64 %5297, 1
  %5326 = icmp eq i64 %5325, %4929
  br i1 %5326, label %5225, label %5296, !llvm.loop !149

5327:                                             ; preds = %5225, %4869
  %5328 = phi <2 x double> [ %5295, %5225 ], [ %4871, %4869 ]
  %5329 = add nuw nsw i64 %4870, 1
  %5330 = load i64, ptr %169, align 8, !tbaa !20
  %5331 = icmp slt i64 %5329, %5330
  br i1 %5331, label %4869, label %5332, !llvm.loop !150

5332:                                             ; preds = %5327
  %5333 = load <2 x double>, ptr %149, align 16, !tbaa !26
  br label %5334

5334:                                             ; preds = %5332, %4827
  %5335 = phi <2 x double> [ %4836, %4827 ], [ %5333, %5332 ]
  %5336 = phi <2 x double> [ %4859, %4827 ], [ %5328, %5332 ]
  %5337 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %5338 = select <2 x i1> %4396, <2 x double> %5337, <2 x double> %5336
  store <2 x double> %5338, ptr %152, align 16, !tbaa !26
  %5339 = load ptr, ptr %226, align 16, !tbaa !39
  %5340 = getelementptr inbounds nuw i8, ptr %5339, i64 16
  store <2 x double> %5335, ptr %5339, align 16, !tbaa !26
  %5341 = load <2 x double>, ptr %227, align 16, !tbaa !26
  %5342 = getelementptr inbounds nuw i8, ptr %5339, i64 32
  store <2 x double> %5341, ptr %5340, align 16, !tbaa !26
  %5343 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %5344 = getelementptr inbounds nuw i8, ptr %5339, i64 48
  store <2 x double> %5343, ptr %5342, align 16, !tbaa !26
  %5345 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %5346 = getelementptr inbounds nuw i8, ptr %5339, i64 64
  store <2 x double> %5345, ptr %5344, align 16, !tbaa !26
  %5347 = load i64, ptr %169, align 8, !tbaa !20
  %5348 = icmp sgt i64 %5347, 0
  br i1 %5348, label %5353, label %5349

5349:                                             ; preds = %5353, %5334
  %5350 = phi ptr [ %5346, %5334 ], [ %5359, %5353 ]
  %5351 = load i64, ptr %228, align 8, !tbaa !151
  %5352 = icmp eq i64 %5351, 0
  br i1 %5352, label %5488, label %5363

5353:                                             ; preds = %5334, %5353
  %5354 = phi ptr [ %5359, %5353 ], [ %5346, %5334 ]
  %5355 = phi i64 [ %5360, %5353 ], [ 0, %5334 ]
  %5356 = load ptr, ptr %142, align 8, !tbaa !28
  %5357 = getelementptr inbounds nuw %struct.Piece, ptr %5356, i64 %5355, i32 35
  %5358 = load <2 x double>, ptr %5357, align 16, !tbaa !26
  %5359 = getelementptr inbounds nuw i8, ptr %5354, i64 16
  store <2 x double> %5358, ptr %5354, align 16, !tbaa !26
  %5360 = add nuw nsw i64 %5355, 1
  %5361 = load i64, ptr %169, align 8, !tbaa !20
  %5362 = icmp slt i64 %5360, %5361
  br i1 %5362, label %5353, label %5349, !llvm.loop !152

5363:                                             ; preds = %5349
  %5364 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %5365 = getelementptr inbounds nuw i8, ptr %5350, i64 16
  store <2 x double> %5364, ptr %5350, align 16, !tbaa !26
  %5366 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %5367 = getelementptr inbounds nuw i8, ptr %5350, i64 32
  store <2 x double> %5366, ptr %5365, align 16, !tbaa !26
  %5368 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %5369 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %5370 = fsub <2 x double> %5368, %5369
  %5371 = fcmp ogt <2 x double> %5370, zeroinitializer
  %5372 = select <2 x i1> %5371, <2 x double> %5370, <2 x double> zeroinitializer
  store <2 x double> %5372, ptr %5367, align 16, !tbaa !26
  %5373 = load i64, ptr %169, align 8, !tbaa !20
  %5374 = icmp sgt i64 %5373, 0
  br i1 %5374, label %5375, label %5488

5375:                                             ; preds = %5363
  %5376 = getelementptr inbounds nuw i8, ptr %5350, i64 48
  br label %5377

5377:                                             ; preds = %5375, %5377
  %5378 = phi ptr [ %5484, %5377 ], [ %5376, %5375 ]
  %5379 = phi i64 [ %5485, %5377 ], [ 0, %5375 ]
  %5380 = load ptr, ptr %142, align 8, !tbaa !28
  %5381 = getelementptr inbounds nuw %struct.Piece, ptr %5380, i64 %5379
  %5382 = getelementptr inbounds nuw i8, ptr %5381, i64 2144
  %5383 = load ptr, ptr %5382, align 16, !tbaa !47
  %5384 = load i64, ptr %132, align 16, !tbaa !21
  %5385 = getelementptr <2 x double>, ptr %5383, i64 %5384
  %5386 = getelementptr i8, ptr %5385, i64 -16
  %5387 = load <2 x double>, ptr %5386, align 16, !tbaa !26
  %5388 = getelementptr inbounds nuw i8, ptr %5381, i64 1808
  %5389 = load <2 x double>, ptr %5388, align 16, !tbaa !26
  %5390 = getelementptr inbounds nuw i8, ptr %5381, i64 1488
  %5391 = load <2 x double>, ptr %5390, align 16, !tbaa !26
  %5392 = fsub <2 x double> %5391, %5387
  %5393 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5389, <2 x double> %5392, <2 x double> %5387)
  %5394 = getelementptr inbounds nuw i8, ptr %5378, i64 16
  store <2 x double> %5393, ptr %5378, align 16, !tbaa !26
  %5395 = getelementptr inbounds nuw i8, ptr %5381, i64 1696
  %5396 = load <2 x double>, ptr %5395, align 16, !tbaa !26
  %5397 = getelementptr inbounds nuw i8, ptr %5378, i64 32
  store <2 x double> %5396, ptr %5394, align 16, !tbaa !26
  %5398 = load <2 x double>, ptr %5381, align 16, !tbaa !26
  %5399 = getelementptr inbounds nuw i8, ptr %5381, i64 960
  %5400 = load <2 x double>, ptr %5399, align 16, !tbaa !26
  %5401 = fsub <2 x double> %5398, %5400
  %5402 = getelementptr inbounds nuw i8, ptr %5378, i64 48
  store <2 x double> %5401, ptr %5397, align 16, !tbaa !26
  %5403 = getelementptr inbounds nuw i8, ptr %5381, i64 1040
  %5404 = load <2 x double>, ptr %5403, align 16, !tbaa !26
  %5405 = getelementptr inbounds nuw i8, ptr %5378, i64 64
  store <2 x double> %5404, ptr %5402, align 16, !tbaa !26
  %5406 = getelementptr inbounds nuw i8, ptr %5381, i64 1024
  %5407 = load <2 x double>, ptr %5406, align 16, !tbaa !26
  %5408 = getelementptr inbounds nuw i8, ptr %5378, i64 80
  store <2 x double> %5407, ptr %5405, align 16, !tbaa !26
  %5409 = getelementptr inbounds nuw i8, ptr %5381, i64 992
  %5410 = load <2 x double>, ptr %5409, align 16, !tbaa !26
  %5411 = getelementptr inbounds nuw i8, ptr %5378, i64 96
  store <2 x double> %5410, ptr %5408, align 16, !tbaa !26
  %5412 = getelementptr inbounds nuw i8, ptr %5381, i64 1056
  %5413 = load <2 x double>, ptr %5412, align 16, !tbaa !26
  %5414 = getelementptr inbounds nuw i8, ptr %5378, i64 112
  store <2 x double> %5413, ptr %5411, align 16, !tbaa !26
  %5415 = getelementptr inbounds nuw i8, ptr %5381, i64 2264
  %5416 = load i64, ptr %133, align 8, !tbaa !22
  %5417 = sitofp i64 %5416 to double
  %5418 = tail call double @llvm.fmuladd.f64(double %5417, double 7.500000e-01, double -5.000000e-01)
  %5419 = fcmp ogt double %5418, 0.000000e+00
  %5420 = select i1 %5419, double %5418, double 0.000000e+00
  %5421 = fptosi double %5420 to i64
  %5422 = add nsw i64 %5416, -2
  %5423 = tail call i64 @llvm.smin.i64(i64 %5422, i64 %5421)
  %5424 = sitofp i64 %5423 to double
  %5425 = fsub double %5418, %5424
  %5426 = fsub double 1.000000e+00, %5425
  %5427 = insertelement <2 x double> poison, double %5426, i64 0
  %5428 = shufflevector <2 x double> %5427, <2 x double> poison, <2 x i32> zeroinitializer
  %5429 = load ptr, ptr %5415, align 8, !tbaa !51
  %5430 = getelementptr inbounds <2 x double>, ptr %5429, i64 %5423
  %5431 = load <2 x double>, ptr %5430, align 16, !tbaa !26
  %5432 = insertelement <2 x double> poison, double %5425, i64 0
  %5433 = shufflevector <2 x double> %5432, <2 x double> poison, <2 x i32> zeroinitializer
  %5434 = getelementptr i8, ptr %5430, i64 16
  %5435 = load <2 x double>, ptr %5434, align 16, !tbaa !26
  %5436 = fmul <2 x double> %5435, %5433
  %5437 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5428, <2 x double> %5431, <2 x double> %5436)
  store <2 x double> %5437, ptr %5414, align 16, !tbaa !26
  %5438 = load i64, ptr %133, align 8, !tbaa !22
  %5439 = sitofp i64 %5438 to double
  %5440 = tail call double @llvm.fmuladd.f64(double %5439, double 5.000000e-01, double -5.000000e-01)
  %5441 = fcmp ogt double %5440, 0.000000e+00
  %5442 = select i1 %5441, double %5440, double 0.000000e+00
  %5443 = fptosi double %5442 to i64
  %5444 = add nsw i64 %5438, -2
  %5445 = tail call i64 @llvm.smin.i64(i64 %5444, i64 %5443)
  %5446 = sitofp i64 %5445 to double
  %5447 = fsub double %5440, %5446
  %5448 = fsub double 1.000000e+00, %5447
  %5449 = insertelement <2 x double> poison, double %5448, i64 0
  %5450 = shufflevector <2 x double> %5449, <2 x double> poison, <2 x i32> zeroinitializer
  %5451 = load ptr, ptr %5415, align 8, !tbaa !51
  %5452 = getelementptr inbounds <2 x double>, ptr %5451, i64 %5445
  %5453 = load <2 x double>, ptr %5452, align 16, !tbaa !26
  %5454 = insertelement <2 x double> poison, double %5447, i64 0
  %5455 = shufflevector <2 x double> %5454, <2 x double> poison, <2 x i32> zeroinitializer
  %5456 = getelementptr i8, ptr %5452, i64 16
  %5457 = load <2 x double>, ptr %5456, align 16, !tbaa !26
  %5458 = fmul <2 x double> %5457, %5455
  %5459 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5450, <2 x double> %5453, <2 x double> %5458)
  %5460 = getelementptr inbounds nuw i8, ptr %5378, i64 128
  store <2 x double> %5459, ptr %5460, align 16, !tbaa !26
  %5461 = load i64, ptr %133, align 8, !tbaa !22
  %5462 = sitofp i64 %5461 to double
  %5463 = tail call double @llvm.fmuladd.f64(double %5462, double 2.500000e-01, double -5.000000e-01)
  %5464 = fcmp ogt double %5463, 0.000000e+00
  %5465 = select i1 %5464, double %5463, double 0.000000e+00
  %5466 = fptosi double %5465 to i64
  %5467 = add nsw i64 %5461, -2
  %5468 = tail call i64 @llvm.smin.i64(i64 %5467, i64 %5466)
  %5469 = sitofp i64 %5468 to double
  %5470 = fsub double %5463, %5469
  %5471 = fsub double 1.000000e+00, %5470
  %5472 = insertelement <2 x double> poison, double %5471, i64 0
  %5473 = shufflevector <2 x double> %5472, <2 x double> poison, <2 x i32> zeroinitializer
  %5474 = load ptr, ptr %5415, align 8, !tbaa !51
  %5475 = getelementptr inbounds <2 x double>, ptr %5474, i64 %5468
  %5476 = load <2 x double>, ptr %5475, align 16, !tbaa !26
  %5477 = insertelement <2 x double> poison, double %5470, i64 0
  %5478 = shufflevector <2 x double> %5477, <2 x double> poison, <2 x i32> zeroinitializer
  %5479 = getelementptr i8, ptr %5475, i64 16
  %5480 = load <2 x double>, ptr %5479, align 16, !tbaa !26
  %5481 = fmul <2 x double> %5480, %5478
  %5482 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5473, <2 x double> %5476, <2 x double> %5481)
  %5483 = getelementptr inbounds nuw i8, ptr %5378, i64 144
  store <2 x double> %5482, ptr %5483, align 16, !tbaa !26
  %5484 = getelementptr inbounds nuw i8, ptr %5378, i64 160
  %5485 = add nuw nsw i64 %5379, 1
  %5486 = load i64, ptr %169, align 8, !tbaa !20
  %5487 = icmp slt i64 %5485, %5486
  br i1 %5487, label %5377, label %5488, !llvm.loop !153

5488:                                             ; preds = %5377, %5363, %5349
  %5489 = getelementptr inbounds nuw i8, ptr %5350, i64 48
  %5490 = extractelement <2 x i64> %4336, i64 0
  %5491 = extractelement <2 x i64> %4336, i64 1
  br label %5492

5492:                                             ; preds = %5488, %5635
  %5493 = phi i1 [ true, %5488 ], [ false, %5635 ]
  %5494 = phi i64 [ %5490, %5488 ], [ %5491, %5635 ]
  %5495 = phi i64 [ 0, %5488 ], [ 1, %5635 ]
  %5496 = icmp eq i64 %5494, 0
  br i1 %5496, label %5635, label %5497

5497:                                             ; preds = %5492
  %5498 = getelementptr inbounds nuw [2 x i64], ptr %229, i64 0, i64 %5495
  %5499 = load i64, ptr %5498, align 8, !tbaa !30
  %5500 = load i64, ptr %230, align 8, !tbaa !154
  %5501 = icmp eq i64 %5499, %5500
  br i1 %5501, label %5505, label %5502

5502:                                             ; preds = %5497
  %5503 = getelementptr inbounds nuw [2 x ptr], ptr %234, i64 0, i64 %5495
  %5504 = load ptr, ptr %5503, align 8, !tbaa !155
  br label %5520

5505:                                             ; preds = %5497
  %5506 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %5495
  %5507 = load i64, ptr %5506, align 8, !tbaa !30
  %5508 = load ptr, ptr %231, align 8, !tbaa !156
  %5509 = load i64, ptr %125, align 8, !tbaa !42
  %5510 = getelementptr inbounds i64, ptr %5508, i64 %5509
  store i64 %5507, ptr %5510, align 8, !tbaa !30
  %5511 = load ptr, ptr %232, align 8, !tbaa !157
  %5512 = load i64, ptr %125, align 8, !tbaa !42
  %5513 = add nsw i64 %5512, 1
  store i64 %5513, ptr %125, align 8, !tbaa !42
  %5514 = load i64, ptr %230, align 8, !tbaa !154
  %5515 = mul nsw i64 %5514, %5512
  %5516 = load i64, ptr %233, align 8, !tbaa !15
  %5517 = mul nsw i64 %5515, %5516
  %5518 = getelementptr inbounds double, ptr %5511, i64 %5517
  %5519 = getelementptr inbounds nuw [2 x ptr], ptr %234, i64 0, i64 %5495
  store ptr %5518, ptr %5519, align 8, !tbaa !155
  br label %5520

5520:                                             ; preds = %5502, %5505
  %5521 = phi i64 [ %5499, %5502 ], [ 0, %5505 ]
  %5522 = phi ptr [ %5504, %5502 ], [ %5518, %5505 ]
  %5523 = add nsw i64 %5521, 1
  store i64 %5523, ptr %5498, align 8, !tbaa !30
  %5524 = load i64, ptr %233, align 8, !tbaa !15
  %5525 = mul nsw i64 %5524, %5521
  %5526 = getelementptr inbounds double, ptr %5522, i64 %5525
  %5527 = load ptr, ptr %226, align 16, !tbaa !39
  %5528 = icmp ult ptr %5527, %5346
  br i1 %5528, label %5588, label %5529

5529:                                             ; preds = %5588, %5520
  %5530 = phi ptr [ %5526, %5520 ], [ %5593, %5588 ]
  %5531 = load i64, ptr %141, align 16, !tbaa !16
  %5532 = icmp sgt i64 %5531, 0
  br i1 %5532, label %5533, label %5575

5533:                                             ; preds = %5529
  %5534 = and i64 %5531, 3
  %5535 = icmp ult i64 %5531, 4
  br i1 %5535, label %5560, label %5536

5536:                                             ; preds = %5533
  %5537 = and i64 %5531, 9223372036854775804
  br label %5538

5538:                                             ; preds = %5538, %5536
  %5539 = phi i64 [ 0, %5536 ], [ %5557, %5538 ]
  %5540 = phi ptr [ %5530, %5536 ], [ %5554, %5538 ]
  %5541 = phi i64 [ 0, %5536 ], [ %5558, %5538 ]
  %5542 = getelementptr i8, ptr %5540, i64 8
  %5543 = getelementptr inbounds nuw <2 x double>, ptr %5346, i64 %5539, i64 %5495
  %5544 = load double, ptr %5543, align 8
  store double %5544, ptr %5540, align 8, !tbaa !43
  %5545 = or disjoint i64 %5539, 1
  %5546 = getelementptr i8, ptr %5540, i64 16
  %5547 = getelementptr inbounds nuw <2 x double>, ptr %5346, i64 %5545, i64 %5495
  %5548 = load double, ptr %5547, align 8
  store double %5548, ptr %5542, align 8, !tbaa !43
  %5549 = or disjoint i64 %5539, 2
  %5550 = getelementptr i8, ptr %5540, i64 24
  %5551 = getelementptr inbounds nuw <2 x double>, ptr %5346, i64 %5549, i64 %5495
  %5552 = load double, ptr %5551, align 8
  store double %5552, ptr %5546, align 8, !tbaa !43
  %5553 = or disjoint i64 %5539, 3
  %5554 = getelementptr i8, ptr %5540, i64 32
  %5555 = getelementptr inbounds nuw <2 x double>, ptr %5346, i64 %5553, i64 %5495
  %5556 = load double, ptr %5555, align 8
  store double %5556, ptr %5550, align 8, !tbaa !43
  %5557 = add nuw nsw i64 %5539, 4
  %5558 = add i64 %5541, 4
  %5559 = icmp eq i64 %5558, %5537
  br i1 %5559, label %5560, label %5538, !llvm.loop !158

5560:                                             ; preds = %5538, %5533
  %5561 = phi ptr [ poison, %5533 ], [ %5554, %5538 ]
  %5562 = phi i64 [ 0, %5533 ], [ %5557, %5538 ]
  %5563 = phi ptr [ %5530, %5533 ], [ %5554, %5538 ]
  %5564 = icmp eq i64 %5534, 0
  br i1 %5564, label %5575, label %5565

5565:                                             ; preds = %5560, %5565
  %5566 = phi i64 [ %5572, %5565 ], [ %5562, %5560 ]
  %5567 = phi ptr [ %5569, %5565 ], [ %5563, %5560 ]
  %5568 = phi i64 [ %5573, %5565 ], [ 0, %5560 ]
  %5569 = getelementptr i8, ptr %5567, i64 8
  %5570 = getelementptr inbounds nuw <2 x double>, ptr %5346, i64 %5566, i64 %5495
  %5571 = load double, ptr %5570, align 8
  store double %5571, ptr %5567, align 8, !tbaa !43
  %5572 = add nuw nsw i64 %5566, 1
  %5573 = add i64 %5568, 1
  %5574 = icmp eq i64 %5573, %5534
  br i1 %5574, label %5575, label %5565, !llvm.loop !159

5575:                                             ; preds = %5560, %5565, %5529
  %5576 = phi ptr [ %5530, %5529 ], [ %5561, %5560 ], [ %5569, %5565 ]
  %5577 = load i64, ptr %228, align 8, !tbaa !151
  %5578 = icmp eq i64 %5577, 0
  br i1 %5578, label %5635, label %5579

5579:                                             ; preds = %5575
  %5580 = getelementptr inbounds nuw double, ptr %5350, i64 %5495
  %5581 = load double, ptr %5580, align 8, !tbaa !43
  %5582 = getelementptr inbounds nuw i8, ptr %5576, i64 8
  store double %5581, ptr %5576, align 8, !tbaa !43
  %5583 = getelementptr inbounds nuw i8, ptr %5580, i64 16
  %5584 = load double, ptr %5583, align 8, !tbaa !43
  %5585 = getelementptr inbounds nuw i8, ptr %5576, i64 16
  store double %5584, ptr %5582, align 8, !tbaa !43
  %5586 = getelementptr inbounds nuw i8, ptr %5580, i64 32
  %5587 = load double, ptr %5586, align 8, !tbaa !43
  store double %5587, ptr %5585, align 8, !tbaa !43
  br i1 %5532, label %5596, label %5635

5588:                                             ; preds = %5520, %5588
  %5589 = phi ptr [ %5594, %5588 ], [ %5527, %5520 ]
  %5590 = phi ptr [ %5593, %5588 ], [ %5526, %5520 ]
  %5591 = getelementptr inbounds nuw double, ptr %5589, i64 %5495
  %5592 = load double, ptr %5591, align 8, !tbaa !43
  %5593 = getelementptr inbounds nuw i8, ptr %5590, i64 8
  store double %5592, ptr %5590, align 8, !tbaa !43
  %5594 = getelementptr inbounds nuw i8, ptr %5589, i64 16
  %5595 = icmp ult ptr %5594, %5346
  br i1 %5595, label %5588, label %5529, !llvm.loop !160

5596:                                             ; preds = %5579
  %5597 = getelementptr inbounds nuw i8, ptr %5576, i64 24
  br label %5598

5598:                                             ; preds = %5596, %5598
  %5599 = phi i64 [ %5633, %5598 ], [ 0, %5596 ]
  %5600 = phi ptr [ %5632, %5598 ], [ %5597, %5596 ]
  %5601 = mul nuw nsw i64 %5599, 160
  %5602 = getelementptr inbounds nuw i8, ptr %5489, i64 %5601
  %5603 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 0, i64 %5495
  %5604 = load double, ptr %5603, align 8
  %5605 = getelementptr inbounds nuw i8, ptr %5600, i64 8
  store double %5604, ptr %5600, align 8, !tbaa !43
  %5606 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 1, i64 %5495
  %5607 = load double, ptr %5606, align 8
  %5608 = getelementptr inbounds nuw i8, ptr %5600, i64 16
  store double %5607, ptr %5605, align 8, !tbaa !43
  %5609 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 2, i64 %5495
  %5610 = load double, ptr %5609, align 8
  %5611 = getelementptr inbounds nuw i8, ptr %5600, i64 24
  store double %5610, ptr %5608, align 8, !tbaa !43
  %5612 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 3, i64 %5495
  %5613 = load double, ptr %5612, align 8
  %5614 = getelementptr inbounds nuw i8, ptr %5600, i64 32
  store double %5613, ptr %5611, align 8, !tbaa !43
  %5615 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 4, i64 %5495
  %5616 = load double, ptr %5615, align 8
  %5617 = getelementptr inbounds nuw i8, ptr %5600, i64 40
  store double %5616, ptr %5614, align 8, !tbaa !43
  %5618 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 5, i64 %5495
  %5619 = load double, ptr %5618, align 8
  %5620 = getelementptr inbounds nuw i8, ptr %5600, i64 48
  store double %5619, ptr %5617, align 8, !tbaa !43
  %5621 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 6, i64 %5495
  %5622 = load double, ptr %5621, align 8
  %5623 = getelementptr inbounds nuw i8, ptr %5600, i64 56
  store double %5622, ptr %5620, align 8, !tbaa !43
  %5624 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 7, i64 %5495
  %5625 = load double, ptr %5624, align 8
  %5626 = getelementptr inbounds nuw i8, ptr %5600, i64 64
  store double %5625, ptr %5623, align 8, !tbaa !43
  %5627 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 8, i64 %5495
  %5628 = load double, ptr %5627, align 8
  %5629 = getelementptr inbounds nuw i8, ptr %5600, i64 72
  store double %5628, ptr %5626, align 8, !tbaa !43
  %5630 = getelementptr inbounds nuw <2 x double>, ptr %5602, i64 9, i64 %5495
  %5631 = load double, ptr %5630, align 8
  %5632 = getelementptr inbounds nuw i8, ptr %5600, i64 80
  store double %5631, ptr %5629, align 8, !tbaa !43
  %5633 = add nuw nsw i64 %5599, 1
  %5634 = icmp eq i64 %5633, %5531
  br i1 %5634, label %5635, label %5598, !llvm.loop !158

5635:                                             ; preds = %5598, %5579, %5575, %5492
  br i1 %5493, label %5492, label %5636, !llvm.loop !161

5636:                                             ; preds = %5635
  %5637 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %5638 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %5639 = fsub <2 x double> %5637, %5638
  %5640 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %5641 = fadd <2 x double> %5640, splat (double -1.000000e-09)
  %5642 = fcmp oge <2 x double> %5639, %5641
  %5643 = select <2 x i1> %5642, <2 x i64> %4336, <2 x i64> zeroinitializer
  %5644 = load i64, ptr %169, align 8, !tbaa !20
  %5645 = icmp sgt i64 %5644, 0
  br i1 %5645, label %5646, label %5694

5646:                                             ; preds = %5636
  %5647 = load ptr, ptr %142, align 8, !tbaa !28
  %5648 = and i64 %5644, 3
  %5649 = icmp ult i64 %5644, 4
  br i1 %5649, label %5678, label %5650

5650:                                             ; preds = %5646
  %5651 = and i64 %5644, 9223372036854775804
  br label %5652

5652:                                             ; preds = %5652, %5650
  %5653 = phi i64 [ 0, %5650 ], [ %5675, %5652 ]
  %5654 = phi <2 x double> [ splat (double 1.000000e+09), %5650 ], [ %5674, %5652 ]
  %5655 = phi i64 [ 0, %5650 ], [ %5676, %5652 ]
  %5656 = getelementptr inbounds nuw %struct.Piece, ptr %5647, i64 %5653, i32 35
  %5657 = load <2 x double>, ptr %5656, align 16, !tbaa !26
  %5658 = fcmp olt <2 x double> %5654, %5657
  %5659 = select <2 x i1> %5658, <2 x double> %5654, <2 x double> %5657
  %5660 = or disjoint i64 %5653, 1
  %5661 = getelementptr inbounds nuw %struct.Piece, ptr %5647, i64 %5660, i32 35
  %5662 = load <2 x double>, ptr %5661, align 16, !tbaa !26
  %5663 = fcmp olt <2 x double> %5659, %5662
  %5664 = select <2 x i1> %5663, <2 x double> %5659, <2 x double> %5662
  %5665 = or disjoint i64 %5653, 2
  %5666 = getelementptr inbounds nuw %struct.Piece, ptr %5647, i64 %5665, i32 35
  %5667 = load <2 x double>, ptr %5666, align 16, !tbaa !26
  %5668 = fcmp olt <2 x double> %5664, %5667
  %5669 = select <2 x i1> %5668, <2 x double> %5664, <2 x double> %5667
  %5670 = or disjoint i64 %5653, 3
  %5671 = getelementptr inbounds nuw %struct.Piece, ptr %5647, i64 %5670, i32 35
  %5672 = load <2 x double>, ptr %5671, align 16, !tbaa !26
  %5673 = fcmp olt <2 x double> %5669, %5672
  %5674 = select <2 x i1> %5673, <2 x double> %5669, <2 x double> %5672
  %5675 = add nuw nsw i64 %5653, 4
  %5676 = add i64 %5655, 4
  %5677 = icmp eq i64 %5676, %5651
  br i1 %5677, label %5678, label %5652, !llvm.loop !135

5678:                                             ; preds = %5652, %5646
  %5679 = phi <2 x double> [ poison, %5646 ], [ %5674, %5652 ]
  %5680 = phi i64 [ 0, %5646 ], [ %5675, %5652 ]
  %5681 = phi <2 x double> [ splat (double 1.000000e+09), %5646 ], [ %5674, %5652 ]
  %5682 = icmp eq i64 %5648, 0
  br i1 %5682, label %5694, label %5683

5683:                                             ; preds = %5678, %5683
  %5684 = phi i64 [ %5691, %5683 ], [ %5680, %5678 ]
  %5685 = phi <2 x double> [ %5690, %5683 ], [ %5681, %5678 ]
  %5686 = phi i64 [ %5692, %5683 ], [ 0, %5678 ]
  %5687 = getelementptr inbounds nuw %struct.Piece, ptr %5647, i64 %5684, i32 35
  %5688 = load <2 x double>, ptr %5687, align 16, !tbaa !26
  %5689 = fcmp olt <2 x double> %5685, %5688
  %5690 = select <2 x i1> %5689, <2 x double> %5685, <2 x double> %5688
  %5691 = add nuw nsw i64 %5684, 1
  %5692 = add i64 %5686, 1
  %5693 = icmp eq i64 %5692, %5648
  br i1 %5693, label %5694, label %5683, !llvm.loop !162

5694:                                             ; preds = %5678, %5683, %5636
  %5695 = phi <2 x double> [ splat (double 1.000000e+09), %5636 ], [ %5679, %5678 ], [ %5690, %5683 ]
  %5696 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %5697 = select <2 x i1> %4396, <2 x double> %5696, <2 x double> %5695
  store <2 x double> %5697, ptr %222, align 16, !tbaa !26
  %5698 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %5699 = fcmp une <2 x double> %5698, zeroinitializer
  %5700 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %5701 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %5702 = fsub <2 x double> %5700, %5701
  %5703 = fcmp une <2 x double> %5698, splat (double 1.000000e+00)
  %5704 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %5705 = load <2 x double>, ptr %224, align 16, !tbaa !26
  %5706 = fsub <2 x double> %5704, %5705
  %5707 = select <2 x i1> %5703, <2 x double> splat (double -1.000000e+00), <2 x double> %5706
  %5708 = fcmp une <2 x double> %5698, splat (double 2.000000e+00)
  %5709 = fsub <2 x double> %5697, %5705
  %5710 = select <2 x i1> %5708, <2 x double> %5707, <2 x double> %5709
  %5711 = fcmp une <2 x double> %5698, splat (double 3.000000e+00)
  %5712 = fsub <2 x double> %5702, %5705
  %5713 = select <2 x i1> %5711, <2 x double> %5710, <2 x double> %5712
  %5714 = fcmp une <2 x double> %5698, splat (double 4.000000e+00)
  %5715 = fsub <2 x double> %5705, %5702
  %5716 = select <2 x i1> %5714, <2 x double> %5713, <2 x double> %5715
  %5717 = fcmp oge <2 x double> %5716, splat (double 0xBEB0C6F7A0B5ED8D)
  %5718 = select <2 x i1> %5717, <2 x i1> %5699, <2 x i1> zeroinitializer
  %5719 = select <2 x i1> %5718, <2 x i64> %4336, <2 x i64> zeroinitializer
  %5720 = xor <2 x i64> %5719, splat (i64 -1)
  %5721 = and <2 x i64> %5643, %5720
  %5722 = load <2 x double>, ptr %139, align 16, !tbaa !26
  %5723 = icmp ne <2 x i64> %5721, zeroinitializer
  %5724 = select <2 x i1> %5699, <2 x i1> %5723, <2 x i1> zeroinitializer
  %5725 = select <2 x i1> %5724, <2 x double> splat (double 2.000000e+00), <2 x double> %5722
  store <2 x double> %5725, ptr %139, align 16, !tbaa !26
  %5726 = or <2 x i64> %5719, %5643
  %5727 = load <2 x double>, ptr %227, align 16, !tbaa !26
  %5728 = fadd <2 x double> %5727, splat (double 1.000000e+00)
  %5729 = icmp eq <2 x i64> %5726, zeroinitializer
  %5730 = select <2 x i1> %5729, <2 x double> %5727, <2 x double> %5728
  store <2 x double> %5730, ptr %227, align 16, !tbaa !26
  %5731 = xor <2 x i64> %5726, %4336
  %5732 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %5733 = fcmp oeq <2 x double> %5732, zeroinitializer
  %5734 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %5735 = fcmp oeq <2 x double> %5734, zeroinitializer
  %5736 = select <2 x i1> %5735, <2 x i1> %5733, <2 x i1> zeroinitializer
  %5737 = select <2 x i1> %5736, <2 x i64> %5731, <2 x i64> zeroinitializer
  %5738 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %5739 = fmul <2 x double> %5738, splat (double 5.000000e-01)
  %5740 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %5741 = fadd <2 x double> %5740, %5739
  %5742 = fadd <2 x double> %5741, splat (double -4.000000e-03)
  %5743 = fcmp ult <2 x double> %5704, %5742
  %5744 = fsub <2 x double> %5740, %5739
  %5745 = fadd <2 x double> %5744, splat (double 4.000000e-03)
  %5746 = fcmp ole <2 x double> %5704, %5745
  %5747 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %5748 = select <2 x i1> %5746, <2 x i64> splat (i64 -1), <2 x i64> %5747
  %5749 = select <2 x i1> %5743, <2 x i64> %5748, <2 x i64> zeroinitializer
  %5750 = xor <2 x i64> %5749, %5747
  %5751 = and <2 x i64> %5750, %5737
  %5752 = and <2 x i64> %5749, %5737
  %5753 = xor <2 x i64> %5737, splat (i64 -1)
  %5754 = and <2 x i64> %5747, %5753
  %5755 = or disjoint <2 x i64> %5752, %5754
  store <2 x i64> %5755, ptr %156, align 16, !tbaa !26
  %5756 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %5757 = or <2 x i64> %5751, %5756
  store <2 x i64> %5757, ptr %166, align 16, !tbaa !26
  %5758 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5726)
  %5759 = icmp eq i64 %5758, 0
  br i1 %5759, label %5770, label %5760

5760:                                             ; preds = %5694
  %5761 = extractelement <2 x i64> %5726, i64 0
  %5762 = icmp eq i64 %5761, 0
  br i1 %5762, label %5764, label %5763

5763:                                             ; preds = %5760
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %5764

5764:                                             ; preds = %5763, %5760
  %5765 = extractelement <2 x i64> %5726, i64 1
  %5766 = icmp eq i64 %5765, 0
  br i1 %5766, label %5768, label %5767

5767:                                             ; preds = %5764
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %5768

5768:                                             ; preds = %5767, %5764
  %5769 = load <2 x double>, ptr %139, align 16, !tbaa !26
  br label %5770

5770:                                             ; preds = %5768, %5694
  %5771 = phi <2 x double> [ %5769, %5768 ], [ %5725, %5694 ]
  %5772 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %5773 = load <2 x double>, ptr %235, align 16, !tbaa !26
  %5774 = fadd <2 x double> %5773, splat (double -1.000000e+00)
  %5775 = fcmp oge <2 x double> %5772, %5774
  %5776 = select <2 x i1> %5775, <2 x i64> %4336, <2 x i64> zeroinitializer
  %5777 = icmp eq <2 x i64> %5776, zeroinitializer
  %5778 = select <2 x i1> %5777, <2 x double> %5771, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %5778, ptr %139, align 16, !tbaa !26
  %5779 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5776)
  %5780 = icmp eq i64 %5779, 0
  br i1 %5780, label %528, label %5781

5781:                                             ; preds = %5770
  %5782 = extractelement <2 x i64> %5776, i64 0
  %5783 = icmp eq i64 %5782, 0
  br i1 %5783, label %5785, label %5784

5784:                                             ; preds = %5781
  store double 1.000000e+00, ptr %131, align 8, !tbaa !43
  br label %5785

5785:                                             ; preds = %5784, %5781
  %5786 = extractelement <2 x i64> %5776, i64 1
  %5787 = icmp eq i64 %5786, 0
  br i1 %5787, label %528, label %5788

5788:                                             ; preds = %5785
  store double 1.000000e+00, ptr %265, align 8, !tbaa !43
  br label %528

5789:                                             ; preds = %528, %533, %122
  %5790 = phi i64 [ 0, %122 ], [ 1, %533 ], [ 0, %528 ]
  ret i64 %5790
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 632
  %6 = zext nneg i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1600) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #7
  %8 = getelementptr inbounds nuw i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #7
  %9 = load i64, ptr %5, align 8, !tbaa !27
  %10 = add nsw i64 %9, 1
  store i64 %10, ptr %5, align 8, !tbaa !27
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 1584
  %12 = load ptr, ptr %11, align 16, !tbaa !39
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %14 = load <2 x double>, ptr %13, align 16, !tbaa !26
  %15 = getelementptr inbounds nuw i8, ptr %12, i64 16
  store <2 x double> %14, ptr %12, align 16, !tbaa !26
  %16 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %17 = load <2 x double>, ptr %16, align 16, !tbaa !26
  %18 = getelementptr inbounds nuw i8, ptr %12, i64 32
  store <2 x double> %17, ptr %15, align 16, !tbaa !26
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %21 = load <2 x double>, ptr %20, align 16, !tbaa !26
  %22 = getelementptr inbounds nuw i8, ptr %12, i64 48
  store <2 x double> %21, ptr %18, align 16, !tbaa !26
  %23 = load <2 x double>, ptr %19, align 16, !tbaa !26
  %24 = getelementptr inbounds nuw i8, ptr %12, i64 64
  store <2 x double> %23, ptr %22, align 16, !tbaa !26
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %26 = load i64, ptr %25, align 8, !tbaa !20
  %27 = icmp sgt i64 %26, 0
  %28 = getelementptr inbounds nuw i8, ptr %4, i64 8
  br i1 %27, label %29, label %31

29:                                               ; preds = %3
  %30 = getelementptr inbounds nuw i8, ptr %0, i64 1592
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
  %47 = getelementptr inbounds nuw i8, ptr %0, i64 816
  %48 = load <2 x double>, ptr %47, align 16, !tbaa !26
  %49 = getelementptr inbounds nuw i8, ptr %32, i64 16
  store <2 x double> %48, ptr %32, align 16, !tbaa !26
  %50 = getelementptr inbounds nuw i8, ptr %0, i64 800
  %51 = load <2 x double>, ptr %50, align 16, !tbaa !26
  %52 = getelementptr inbounds nuw i8, ptr %32, i64 32
  store <2 x double> %51, ptr %49, align 16, !tbaa !26
  %53 = load <2 x double>, ptr %20, align 16, !tbaa !26
  %54 = getelementptr inbounds nuw i8, ptr %0, i64 784
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
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 1592
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 608
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 616
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
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %180 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %182 = load ptr, ptr %181, align 8
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %186 = getelementptr inbounds nuw i8, ptr %0, i64 1552
  %187 = load ptr, ptr %11, align 16
  %188 = icmp ult ptr %187, %24
  %189 = getelementptr inbounds nuw i8, ptr %0, i64 592
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
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1600) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %6 = zext nneg i32 %2 to i64
  %7 = getelementptr inbounds nuw [2 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !154
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %11 = getelementptr inbounds nuw [2 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 1520
  %13 = shl nuw nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = zext nneg i32 %14 to i64
  %16 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = zext nneg i32 %13 to i64
  %18 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 1568
  %20 = getelementptr inbounds nuw [2 x double], ptr %19, i64 0, i64 %6
  store double 0.000000e+00, ptr %20, align 8, !tbaa !43
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !164
  %23 = mul i64 %3, 296
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr inbounds nuw double, ptr %0, i64 %6
  br label %42

26:                                               ; preds = %42
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %28 = load i64, ptr %27, align 8, !tbaa !20
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %62

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 1592
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 608
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 616
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = load ptr, ptr %36, align 8, !tbaa !165
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !166
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !167
  br label %161

42:                                               ; preds = %48, %4
  %43 = phi i64 [ 0, %4 ], [ %61, %48 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !43
  %46 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !43
  %47 = icmp eq i64 %43, 36
  br i1 %47, label %26, label %48, !llvm.loop !168

48:                                               ; preds = %42
  %49 = or disjoint i64 %43, 1
  %50 = getelementptr double, ptr %24, i64 %49
  %51 = load double, ptr %50, align 8, !tbaa !43
  %52 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %49
  store double %51, ptr %52, align 8, !tbaa !43
  %53 = or disjoint i64 %43, 2
  %54 = getelementptr double, ptr %24, i64 %53
  %55 = load double, ptr %54, align 8, !tbaa !43
  %56 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %53
  store double %55, ptr %56, align 8, !tbaa !43
  %57 = or disjoint i64 %43, 3
  %58 = getelementptr double, ptr %24, i64 %57
  %59 = load double, ptr %58, align 8, !tbaa !43
  %60 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %57
  store double %59, ptr %60, align 8, !tbaa !43
  %61 = add nuw nsw i64 %43, 4
  br label %42

62:                                               ; preds = %557, %26
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 656
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %65 = getelementptr inbounds nuw i8, ptr %0, i64 848
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 336
  %67 = getelementptr inbounds nuw double, ptr %66, i64 %6
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %69 = getelementptr inbounds nuw double, ptr %68, i64 %6
  %70 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %71 = getelementptr inbounds nuw double, ptr %70, i64 %6
  %72 = getelementptr inbounds nuw double, ptr %63, i64 %6
  %73 = getelementptr inbounds nuw i8, ptr %72, i64 64
  store double 0.000000e+00, ptr %73, align 8, !tbaa !43
  %74 = getelementptr inbounds nuw i8, ptr %72, i64 80
  store double 0.000000e+00, ptr %74, align 8, !tbaa !43
  %75 = load double, ptr %67, align 8, !tbaa !43
  store double %75, ptr %72, align 8, !tbaa !43
  %76 = load double, ptr %69, align 8, !tbaa !43
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %78 = getelementptr inbounds nuw double, ptr %77, i64 %6
  store double %76, ptr %78, align 8, !tbaa !43
  %79 = load double, ptr %71, align 8, !tbaa !43
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 688
  %81 = getelementptr inbounds nuw double, ptr %80, i64 %6
  store double %79, ptr %81, align 8, !tbaa !43
  %82 = getelementptr inbounds nuw i8, ptr %0, i64 672
  %83 = getelementptr inbounds nuw double, ptr %82, i64 %6
  store double %79, ptr %83, align 8, !tbaa !43
  %84 = getelementptr inbounds nuw double, ptr %64, i64 %6
  %85 = getelementptr inbounds nuw i8, ptr %84, i64 64
  store double 0.000000e+00, ptr %85, align 8, !tbaa !43
  %86 = getelementptr inbounds nuw i8, ptr %84, i64 80
  store double 0.000000e+00, ptr %86, align 8, !tbaa !43
  store double %75, ptr %84, align 8, !tbaa !43
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 800
  %88 = getelementptr inbounds nuw double, ptr %87, i64 %6
  store double %76, ptr %88, align 8, !tbaa !43
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %6
  store double %79, ptr %90, align 8, !tbaa !43
  %91 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %92 = getelementptr inbounds nuw double, ptr %91, i64 %6
  store double %79, ptr %92, align 8, !tbaa !43
  %93 = getelementptr inbounds nuw double, ptr %65, i64 %6
  %94 = getelementptr inbounds nuw i8, ptr %93, i64 64
  store double 0.000000e+00, ptr %94, align 8, !tbaa !43
  %95 = getelementptr inbounds nuw i8, ptr %93, i64 80
  store double 0.000000e+00, ptr %95, align 8, !tbaa !43
  store double %75, ptr %93, align 8, !tbaa !43
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 896
  %97 = getelementptr inbounds nuw double, ptr %96, i64 %6
  store double %76, ptr %97, align 8, !tbaa !43
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 880
  %99 = getelementptr inbounds nuw double, ptr %98, i64 %6
  store double %79, ptr %99, align 8, !tbaa !43
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 864
  %101 = getelementptr inbounds nuw double, ptr %100, i64 %6
  store double %79, ptr %101, align 8, !tbaa !43
  %102 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %103 = getelementptr inbounds nuw double, ptr %102, i64 %6
  %104 = load double, ptr %103, align 8, !tbaa !43
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %106 = getelementptr inbounds nuw double, ptr %105, i64 %6
  store double %104, ptr %106, align 8, !tbaa !43
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %108 = getelementptr inbounds nuw double, ptr %107, i64 %6
  store double %104, ptr %108, align 8, !tbaa !43
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 1184
  %110 = getelementptr inbounds nuw double, ptr %109, i64 %6
  store double 1.000000e+09, ptr %110, align 8, !tbaa !43
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %112 = getelementptr inbounds nuw double, ptr %111, i64 %6
  store double 0.000000e+00, ptr %112, align 8, !tbaa !43
  %113 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %114 = getelementptr inbounds nuw double, ptr %113, i64 %6
  %115 = load double, ptr %114, align 8, !tbaa !43
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %117 = getelementptr inbounds nuw double, ptr %116, i64 %6
  store double %115, ptr %117, align 8, !tbaa !43
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %119 = getelementptr inbounds nuw double, ptr %118, i64 %6
  store double %115, ptr %119, align 8, !tbaa !43
  %120 = getelementptr inbounds nuw i8, ptr %0, i64 560
  %121 = getelementptr inbounds nuw double, ptr %120, i64 %6
  %122 = load double, ptr %121, align 8, !tbaa !43
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 1312
  %124 = getelementptr inbounds nuw double, ptr %123, i64 %6
  store double %122, ptr %124, align 8, !tbaa !43
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 1152
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 1168
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 1248
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 1264
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 1296
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 1328
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 1360
  %136 = getelementptr inbounds nuw i8, ptr %0, i64 1376
  %137 = getelementptr inbounds nuw i8, ptr %0, i64 1392
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
  %150 = getelementptr inbounds nuw double, ptr %137, i64 %6
  store double 0.000000e+00, ptr %150, align 8, !tbaa !43
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %152 = getelementptr inbounds nuw i64, ptr %151, i64 %6
  store i64 0, ptr %152, align 8, !tbaa !30
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %154 = getelementptr inbounds nuw i64, ptr %153, i64 %6
  store i64 0, ptr %154, align 8, !tbaa !30
  %155 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %156 = getelementptr inbounds nuw i64, ptr %155, i64 %6
  store i64 -1, ptr %156, align 8, !tbaa !30
  %157 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %158 = getelementptr inbounds nuw i64, ptr %157, i64 %6
  store i64 -1, ptr %158, align 8, !tbaa !30
  %159 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %160 = getelementptr inbounds nuw i64, ptr %159, i64 %6
  store i64 -1, ptr %160, align 8, !tbaa !30
  ret void

161:                                              ; preds = %30, %557
  %162 = phi i64 [ 0, %30 ], [ %558, %557 ]
  %163 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %162
  %164 = load i64, ptr %33, align 16, !tbaa !21
  %165 = load i64, ptr %34, align 8, !tbaa !22
  %166 = load i64, ptr %35, align 16, !tbaa !16
  %167 = mul nsw i64 %166, %3
  %168 = add nsw i64 %167, %162
  %169 = getelementptr inbounds nuw i8, ptr %163, i64 2128
  %170 = load i64, ptr %169, align 16, !tbaa !31
  %171 = mul i64 %168, 368
  %172 = getelementptr i8, ptr %37, i64 %171
  %173 = getelementptr inbounds nuw double, ptr %163, i64 %6
  br label %203

174:                                              ; preds = %203
  %175 = icmp eq i64 %170, 0
  %176 = getelementptr inbounds i64, ptr %41, i64 %168
  %177 = load i64, ptr %176, align 8, !tbaa !30
  %178 = mul nsw i64 %164, 3
  %179 = add nsw i64 %164, 1
  %180 = select i1 %175, i64 0, i64 2
  %181 = shl i64 %179, %180
  %182 = add nsw i64 %181, %178
  %183 = mul nsw i64 %177, %182
  %184 = getelementptr inbounds double, ptr %39, i64 %183
  %185 = icmp sgt i64 %164, 0
  br i1 %185, label %186, label %227

186:                                              ; preds = %174
  %187 = getelementptr inbounds nuw i8, ptr %163, i64 2224
  %188 = load ptr, ptr %187, align 16, !tbaa !73
  %189 = getelementptr inbounds nuw double, ptr %188, i64 %6
  %190 = getelementptr double, ptr %184, i64 %164
  %191 = getelementptr inbounds nuw i8, ptr %163, i64 2232
  %192 = load ptr, ptr %191, align 8, !tbaa !49
  %193 = getelementptr inbounds nuw double, ptr %192, i64 %6
  %194 = shl i64 %164, 4
  %195 = getelementptr i8, ptr %184, i64 %194
  %196 = getelementptr inbounds nuw i8, ptr %163, i64 2240
  %197 = load ptr, ptr %196, align 16, !tbaa !139
  %198 = getelementptr inbounds nuw double, ptr %197, i64 %6
  %199 = and i64 %164, 1
  %200 = icmp eq i64 %164, 1
  br i1 %200, label %214, label %201

201:                                              ; preds = %186
  %202 = and i64 %164, 9223372036854775806
  br label %242

203:                                              ; preds = %203, %161
  %204 = phi i64 [ 0, %161 ], [ %212, %203 ]
  %205 = getelementptr double, ptr %172, i64 %204
  %206 = load double, ptr %205, align 8, !tbaa !43
  %207 = getelementptr inbounds nuw <2 x double>, ptr %173, i64 %204
  store double %206, ptr %207, align 8, !tbaa !43
  %208 = or disjoint i64 %204, 1
  %209 = getelementptr double, ptr %172, i64 %208
  %210 = load double, ptr %209, align 8, !tbaa !43
  %211 = getelementptr inbounds nuw <2 x double>, ptr %173, i64 %208
  store double %210, ptr %211, align 8, !tbaa !43
  %212 = add nuw nsw i64 %204, 2
  %213 = icmp eq i64 %212, 46
  br i1 %213, label %174, label %203, !llvm.loop !169

214:                                              ; preds = %242, %186
  %215 = phi i64 [ 0, %186 ], [ %264, %242 ]
  %216 = icmp eq i64 %199, 0
  br i1 %216, label %227, label %217

217:                                              ; preds = %214
  %218 = getelementptr inbounds nuw double, ptr %184, i64 %215
  %219 = load double, ptr %218, align 8, !tbaa !43
  %220 = getelementptr inbounds nuw <2 x double>, ptr %189, i64 %215
  store double %219, ptr %220, align 8, !tbaa !43
  %221 = getelementptr double, ptr %190, i64 %215
  %222 = load double, ptr %221, align 8, !tbaa !43
  %223 = getelementptr inbounds nuw <2 x double>, ptr %193, i64 %215
  store double %222, ptr %223, align 8, !tbaa !43
  %224 = getelementptr double, ptr %195, i64 %215
  %225 = load double, ptr %224, align 8, !tbaa !43
  %226 = getelementptr inbounds nuw <2 x double>, ptr %198, i64 %215
  store double %225, ptr %226, align 8, !tbaa !43
  br label %227

227:                                              ; preds = %217, %214, %174
  %228 = getelementptr inbounds nuw i8, ptr %163, i64 240
  %229 = getelementptr inbounds nuw double, ptr %228, i64 %6
  %230 = load double, ptr %229, align 8, !tbaa !43
  %231 = load double, ptr %173, align 8, !tbaa !43
  %232 = icmp sgt i64 %181, 0
  br i1 %232, label %233, label %279

233:                                              ; preds = %227
  %234 = getelementptr double, ptr %184, i64 %178
  %235 = getelementptr inbounds nuw i8, ptr %163, i64 2248
  %236 = load ptr, ptr %235, align 8, !tbaa !36
  %237 = getelementptr inbounds nuw double, ptr %236, i64 %6
  %238 = and i64 %181, 3
  %239 = icmp ult i64 %181, 4
  br i1 %239, label %267, label %240

240:                                              ; preds = %233
  %241 = and i64 %181, 9223372036854775804
  br label %288

242:                                              ; preds = %242, %201
  %243 = phi i64 [ 0, %201 ], [ %264, %242 ]
  %244 = phi i64 [ 0, %201 ], [ %265, %242 ]
  %245 = getelementptr inbounds nuw double, ptr %184, i64 %243
  %246 = load double, ptr %245, align 8, !tbaa !43
  %247 = getelementptr inbounds nuw <2 x double>, ptr %189, i64 %243
  store double %246, ptr %247, align 8, !tbaa !43
  %248 = getelementptr double, ptr %190, i64 %243
  %249 = load double, ptr %248, align 8, !tbaa !43
  %250 = getelementptr inbounds nuw <2 x double>, ptr %193, i64 %243
  store double %249, ptr %250, align 8, !tbaa !43
  %251 = getelementptr double, ptr %195, i64 %243
  %252 = load double, ptr %251, align 8, !tbaa !43
  %253 = getelementptr inbounds nuw <2 x double>, ptr %198, i64 %243
  store double %252, ptr %253, align 8, !tbaa !43
  %254 = or disjoint i64 %243, 1
  %255 = getelementptr inbounds nuw double, ptr %184, i64 %254
  %256 = load double, ptr %255, align 8, !tbaa !43
  %257 = getelementptr inbounds nuw <2 x double>, ptr %189, i64 %254
  store double %256, ptr %257, align 8, !tbaa !43
  %258 = getelementptr double, ptr %190, i64 %254
  %259 = load double, ptr %258, align 8, !tbaa !43
  %260 = getelementptr inbounds nuw <2 x double>, ptr %193, i64 %254
  store double %259, ptr %260, align 8, !tbaa !43
  %261 = getelementptr double, ptr %195, i64 %254
  %262 = load double, ptr %261, align 8, !tbaa !43
  %263 = getelementptr inbounds nuw <2 x double>, ptr %198, i64 %254
  store double %262, ptr %263, align 8, !tbaa !43
  %264 = add nuw nsw i64 %243, 2
  %265 = add i64 %244, 2
  %266 = icmp eq i64 %265, %202
  br i1 %266, label %214, label %242, !llvm.loop !170

267:                                              ; preds = %288, %233
  %268 = phi i64 [ 0, %233 ], [ %306, %288 ]
  %269 = icmp eq i64 %238, 0
  br i1 %269, label %279, label %270

270:                                              ; preds = %267, %270
  %271 = phi i64 [ %276, %270 ], [ %268, %267 ]
  %272 = phi i64 [ %277, %270 ], [ 0, %267 ]
  %273 = getelementptr double, ptr %234, i64 %271
  %274 = load double, ptr %273, align 8, !tbaa !43
  %275 = getelementptr inbounds nuw <2 x double>, ptr %237, i64 %271
  store double %274, ptr %275, align 8, !tbaa !43
  %276 = add nuw nsw i64 %271, 1
  %277 = add i64 %272, 1
  %278 = icmp eq i64 %277, %238
  br i1 %278, label %279, label %270, !llvm.loop !171

279:                                              ; preds = %267, %270, %227
  %280 = icmp ne i64 %170, 0
  %281 = icmp sgt i64 %164, -1
  %282 = select i1 %280, i1 %281, i1 false
  br i1 %282, label %283, label %309

283:                                              ; preds = %279
  %284 = fdiv double 1.000000e+00, %231
  %285 = getelementptr inbounds nuw i8, ptr %163, i64 2248
  %286 = load ptr, ptr %285, align 8, !tbaa !36
  %287 = getelementptr inbounds nuw double, ptr %286, i64 %6
  br label %445

288:                                              ; preds = %288, %240
  %289 = phi i64 [ 0, %240 ], [ %306, %288 ]
  %290 = phi i64 [ 0, %240 ], [ %307, %288 ]
  %291 = getelementptr double, ptr %234, i64 %289
  %292 = load double, ptr %291, align 8, !tbaa !43
  %293 = getelementptr inbounds nuw <2 x double>, ptr %237, i64 %289
  store double %292, ptr %293, align 8, !tbaa !43
  %294 = or disjoint i64 %289, 1
  %295 = getelementptr double, ptr %234, i64 %294
  %296 = load double, ptr %295, align 8, !tbaa !43
  %297 = getelementptr inbounds nuw <2 x double>, ptr %237, i64 %294
  store double %296, ptr %297, align 8, !tbaa !43
  %298 = or disjoint i64 %289, 2
  %299 = getelementptr double, ptr %234, i64 %298
  %300 = load double, ptr %299, align 8, !tbaa !43
  %301 = getelementptr inbounds nuw <2 x double>, ptr %237, i64 %298
  store double %300, ptr %301, align 8, !tbaa !43
  %302 = or disjoint i64 %289, 3
  %303 = getelementptr double, ptr %234, i64 %302
  %304 = load double, ptr %303, align 8, !tbaa !43
  %305 = getelementptr inbounds nuw <2 x double>, ptr %237, i64 %302
  store double %304, ptr %305, align 8, !tbaa !43
  %306 = add nuw nsw i64 %289, 4
  %307 = add i64 %290, 4
  %308 = icmp eq i64 %307, %241
  br i1 %308, label %267, label %288, !llvm.loop !172

309:                                              ; preds = %445, %279
  %310 = getelementptr inbounds nuw i8, ptr %163, i64 640
  %311 = getelementptr inbounds nuw double, ptr %310, i64 %6
  %312 = load double, ptr %311, align 8, !tbaa !43
  %313 = getelementptr inbounds nuw i8, ptr %163, i64 656
  %314 = getelementptr inbounds nuw double, ptr %313, i64 %6
  %315 = load double, ptr %314, align 8, !tbaa !43
  %316 = getelementptr inbounds nuw i8, ptr %163, i64 672
  %317 = getelementptr inbounds nuw double, ptr %316, i64 %6
  %318 = load double, ptr %317, align 8, !tbaa !43
  %319 = getelementptr inbounds nuw i8, ptr %163, i64 688
  %320 = getelementptr inbounds nuw double, ptr %319, i64 %6
  %321 = load double, ptr %320, align 8, !tbaa !43
  %322 = tail call double @llvm.fmuladd.f64(double %231, double %321, double %318)
  %323 = tail call double @llvm.fmuladd.f64(double %231, double %322, double %315)
  %324 = tail call double @llvm.fmuladd.f64(double %231, double %323, double %312)
  %325 = getelementptr inbounds nuw i8, ptr %163, i64 208
  %326 = getelementptr inbounds nuw double, ptr %325, i64 %6
  %327 = load double, ptr %326, align 8, !tbaa !43
  %328 = getelementptr inbounds nuw i8, ptr %163, i64 352
  %329 = getelementptr inbounds nuw double, ptr %328, i64 %6
  %330 = load double, ptr %329, align 8, !tbaa !43
  %331 = getelementptr inbounds nuw i8, ptr %163, i64 384
  %332 = getelementptr inbounds nuw double, ptr %331, i64 %6
  %333 = load double, ptr %332, align 8, !tbaa !43
  %334 = fsub double %330, %333
  %335 = fmul double %327, %334
  %336 = getelementptr inbounds nuw i8, ptr %163, i64 736
  %337 = getelementptr inbounds nuw i8, ptr %163, i64 960
  %338 = getelementptr inbounds nuw i8, ptr %163, i64 1184
  %339 = getelementptr inbounds nuw i8, ptr %163, i64 224
  %340 = getelementptr inbounds nuw double, ptr %339, i64 %6
  %341 = getelementptr inbounds nuw i8, ptr %163, i64 256
  %342 = getelementptr inbounds nuw double, ptr %341, i64 %6
  %343 = getelementptr inbounds nuw double, ptr %336, i64 %6
  %344 = getelementptr inbounds nuw i8, ptr %343, i64 80
  store double 0.000000e+00, ptr %344, align 8, !tbaa !43
  %345 = getelementptr inbounds nuw i8, ptr %343, i64 96
  store double 0.000000e+00, ptr %345, align 8, !tbaa !43
  %346 = getelementptr inbounds nuw i8, ptr %343, i64 112
  store double 0.000000e+00, ptr %346, align 8, !tbaa !43
  %347 = getelementptr inbounds nuw i8, ptr %343, i64 128
  store double 0.000000e+00, ptr %347, align 8, !tbaa !43
  %348 = getelementptr inbounds nuw i8, ptr %343, i64 144
  store double 0.000000e+00, ptr %348, align 8, !tbaa !43
  %349 = getelementptr inbounds nuw i8, ptr %343, i64 176
  store double 0.000000e+00, ptr %349, align 8, !tbaa !43
  %350 = getelementptr inbounds nuw i8, ptr %343, i64 192
  store double 0.000000e+00, ptr %350, align 8, !tbaa !43
  store double %231, ptr %343, align 8, !tbaa !43
  %351 = getelementptr inbounds nuw i8, ptr %163, i64 752
  %352 = getelementptr inbounds nuw double, ptr %351, i64 %6
  store double %330, ptr %352, align 8, !tbaa !43
  %353 = load double, ptr %340, align 8, !tbaa !43
  %354 = getelementptr inbounds nuw i8, ptr %163, i64 768
  %355 = getelementptr inbounds nuw double, ptr %354, i64 %6
  store double %353, ptr %355, align 8, !tbaa !43
  %356 = getelementptr inbounds nuw i8, ptr %163, i64 784
  %357 = getelementptr inbounds nuw double, ptr %356, i64 %6
  store double %335, ptr %357, align 8, !tbaa !43
  %358 = getelementptr inbounds nuw i8, ptr %163, i64 896
  %359 = getelementptr inbounds nuw double, ptr %358, i64 %6
  store double %230, ptr %359, align 8, !tbaa !43
  %360 = load double, ptr %342, align 8, !tbaa !43
  %361 = getelementptr inbounds nuw i8, ptr %163, i64 800
  %362 = getelementptr inbounds nuw double, ptr %361, i64 %6
  store double %360, ptr %362, align 8, !tbaa !43
  %363 = getelementptr inbounds nuw i8, ptr %163, i64 944
  %364 = getelementptr inbounds nuw double, ptr %363, i64 %6
  store double %324, ptr %364, align 8, !tbaa !43
  %365 = getelementptr inbounds nuw double, ptr %337, i64 %6
  %366 = getelementptr inbounds nuw i8, ptr %365, i64 80
  store double 0.000000e+00, ptr %366, align 8, !tbaa !43
  %367 = getelementptr inbounds nuw i8, ptr %365, i64 96
  store double 0.000000e+00, ptr %367, align 8, !tbaa !43
  %368 = getelementptr inbounds nuw i8, ptr %365, i64 112
  store double 0.000000e+00, ptr %368, align 8, !tbaa !43
  %369 = getelementptr inbounds nuw i8, ptr %365, i64 128
  store double 0.000000e+00, ptr %369, align 8, !tbaa !43
  %370 = getelementptr inbounds nuw i8, ptr %365, i64 144
  store double 0.000000e+00, ptr %370, align 8, !tbaa !43
  %371 = getelementptr inbounds nuw i8, ptr %365, i64 176
  store double 0.000000e+00, ptr %371, align 8, !tbaa !43
  %372 = getelementptr inbounds nuw i8, ptr %365, i64 192
  store double 0.000000e+00, ptr %372, align 8, !tbaa !43
  store double %231, ptr %365, align 8, !tbaa !43
  %373 = getelementptr inbounds nuw i8, ptr %163, i64 976
  %374 = getelementptr inbounds nuw double, ptr %373, i64 %6
  store double %330, ptr %374, align 8, !tbaa !43
  %375 = getelementptr inbounds nuw i8, ptr %163, i64 992
  %376 = getelementptr inbounds nuw double, ptr %375, i64 %6
  store double %353, ptr %376, align 8, !tbaa !43
  %377 = getelementptr inbounds nuw i8, ptr %163, i64 1008
  %378 = getelementptr inbounds nuw double, ptr %377, i64 %6
  store double %335, ptr %378, align 8, !tbaa !43
  %379 = getelementptr inbounds nuw i8, ptr %163, i64 1120
  %380 = getelementptr inbounds nuw double, ptr %379, i64 %6
  store double %230, ptr %380, align 8, !tbaa !43
  %381 = getelementptr inbounds nuw i8, ptr %163, i64 1024
  %382 = getelementptr inbounds nuw double, ptr %381, i64 %6
  store double %360, ptr %382, align 8, !tbaa !43
  %383 = getelementptr inbounds nuw i8, ptr %163, i64 1168
  %384 = getelementptr inbounds nuw double, ptr %383, i64 %6
  store double %324, ptr %384, align 8, !tbaa !43
  %385 = getelementptr inbounds nuw double, ptr %338, i64 %6
  %386 = getelementptr inbounds nuw i8, ptr %385, i64 80
  store double 0.000000e+00, ptr %386, align 8, !tbaa !43
  %387 = getelementptr inbounds nuw i8, ptr %385, i64 96
  store double 0.000000e+00, ptr %387, align 8, !tbaa !43
  %388 = getelementptr inbounds nuw i8, ptr %385, i64 112
  store double 0.000000e+00, ptr %388, align 8, !tbaa !43
  %389 = getelementptr inbounds nuw i8, ptr %385, i64 128
  store double 0.000000e+00, ptr %389, align 8, !tbaa !43
  %390 = getelementptr inbounds nuw i8, ptr %385, i64 144
  store double 0.000000e+00, ptr %390, align 8, !tbaa !43
  %391 = getelementptr inbounds nuw i8, ptr %385, i64 176
  store double 0.000000e+00, ptr %391, align 8, !tbaa !43
  %392 = getelementptr inbounds nuw i8, ptr %385, i64 192
  store double 0.000000e+00, ptr %392, align 8, !tbaa !43
  store double %231, ptr %385, align 8, !tbaa !43
  %393 = load double, ptr %329, align 8, !tbaa !43
  %394 = getelementptr inbounds nuw i8, ptr %163, i64 1200
  %395 = getelementptr inbounds nuw double, ptr %394, i64 %6
  store double %393, ptr %395, align 8, !tbaa !43
  %396 = getelementptr inbounds nuw i8, ptr %163, i64 1216
  %397 = getelementptr inbounds nuw double, ptr %396, i64 %6
  store double %353, ptr %397, align 8, !tbaa !43
  %398 = getelementptr inbounds nuw i8, ptr %163, i64 1232
  %399 = getelementptr inbounds nuw double, ptr %398, i64 %6
  store double %335, ptr %399, align 8, !tbaa !43
  %400 = getelementptr inbounds nuw i8, ptr %163, i64 1344
  %401 = getelementptr inbounds nuw double, ptr %400, i64 %6
  store double %230, ptr %401, align 8, !tbaa !43
  %402 = getelementptr inbounds nuw i8, ptr %163, i64 1248
  %403 = getelementptr inbounds nuw double, ptr %402, i64 %6
  store double %360, ptr %403, align 8, !tbaa !43
  %404 = getelementptr inbounds nuw i8, ptr %163, i64 1392
  %405 = getelementptr inbounds nuw double, ptr %404, i64 %6
  store double %324, ptr %405, align 8, !tbaa !43
  %406 = load double, ptr %340, align 8, !tbaa !43
  %407 = fadd double %335, %406
  %408 = getelementptr inbounds nuw i8, ptr %163, i64 400
  %409 = getelementptr inbounds nuw double, ptr %408, i64 %6
  store double %407, ptr %409, align 8, !tbaa !43
  %410 = fcmp ogt double %406, 0.000000e+00
  %411 = fdiv double 1.000000e+00, %406
  %412 = select i1 %410, double %411, double 0.000000e+00
  %413 = getelementptr inbounds nuw i8, ptr %163, i64 1936
  %414 = getelementptr inbounds nuw double, ptr %413, i64 %6
  store double %412, ptr %414, align 8, !tbaa !43
  %415 = getelementptr inbounds nuw i8, ptr %163, i64 176
  %416 = getelementptr inbounds nuw double, ptr %415, i64 %6
  %417 = load double, ptr %416, align 8, !tbaa !43
  %418 = fdiv double 1.000000e+00, %417
  %419 = getelementptr inbounds nuw i8, ptr %163, i64 1952
  %420 = getelementptr inbounds nuw double, ptr %419, i64 %6
  store double %418, ptr %420, align 8, !tbaa !43
  %421 = getelementptr inbounds nuw i8, ptr %163, i64 1488
  %422 = getelementptr inbounds nuw i8, ptr %163, i64 1696
  %423 = getelementptr inbounds nuw i8, ptr %163, i64 1712
  %424 = getelementptr inbounds nuw i8, ptr %163, i64 1904
  %425 = getelementptr inbounds nuw double, ptr %421, i64 %6
  store double %230, ptr %425, align 8, !tbaa !43
  %426 = getelementptr inbounds nuw double, ptr %422, i64 %6
  store double %230, ptr %426, align 8, !tbaa !43
  %427 = getelementptr inbounds nuw double, ptr %423, i64 %6
  store double %230, ptr %427, align 8, !tbaa !43
  %428 = getelementptr inbounds nuw double, ptr %424, i64 %6
  store double %230, ptr %428, align 8, !tbaa !43
  %429 = getelementptr inbounds nuw i8, ptr %163, i64 1504
  %430 = getelementptr inbounds nuw i8, ptr %163, i64 1520
  %431 = getelementptr inbounds nuw i8, ptr %163, i64 1920
  %432 = getelementptr inbounds nuw i8, ptr %163, i64 1888
  %433 = getelementptr inbounds nuw i8, ptr %163, i64 1808
  %434 = getelementptr inbounds nuw double, ptr %429, i64 %6
  store double 0.000000e+00, ptr %434, align 8, !tbaa !43
  %435 = getelementptr inbounds nuw double, ptr %430, i64 %6
  store double 0.000000e+00, ptr %435, align 8, !tbaa !43
  %436 = getelementptr inbounds nuw double, ptr %431, i64 %6
  store double 0.000000e+00, ptr %436, align 8, !tbaa !43
  %437 = getelementptr inbounds nuw double, ptr %432, i64 %6
  store double 0.000000e+00, ptr %437, align 8, !tbaa !43
  %438 = getelementptr inbounds nuw double, ptr %433, i64 %6
  store double 0.000000e+00, ptr %438, align 8, !tbaa !43
  %439 = getelementptr inbounds nuw i8, ptr %163, i64 2080
  %440 = getelementptr inbounds nuw i64, ptr %439, i64 %6
  store i64 0, ptr %440, align 8, !tbaa !30
  %441 = getelementptr inbounds nuw i8, ptr %163, i64 2096
  %442 = getelementptr inbounds nuw i64, ptr %441, i64 %6
  store i64 -1, ptr %442, align 8, !tbaa !30
  %443 = getelementptr inbounds nuw i8, ptr %163, i64 2112
  %444 = getelementptr inbounds nuw i64, ptr %443, i64 %6
  store i64 0, ptr %444, align 8, !tbaa !30
  br i1 %185, label %467, label %483

445:                                              ; preds = %283, %445
  %446 = phi i64 [ 0, %283 ], [ %465, %445 ]
  %447 = icmp slt i64 %446, %170
  %448 = select i1 %447, double %284, double 1.000000e+00
  %449 = shl nsw i64 %446, 6
  %450 = getelementptr inbounds nuw i8, ptr %287, i64 %449
  %451 = load double, ptr %450, align 8, !tbaa !43
  %452 = fmul double %448, %451
  store double %452, ptr %450, align 8, !tbaa !43
  %453 = fdiv double %448, %231
  %454 = getelementptr inbounds nuw i8, ptr %450, i64 16
  %455 = load double, ptr %454, align 8, !tbaa !43
  %456 = fmul double %453, %455
  store double %456, ptr %454, align 8, !tbaa !43
  %457 = fdiv double %453, %231
  %458 = getelementptr inbounds nuw i8, ptr %450, i64 32
  %459 = load double, ptr %458, align 8, !tbaa !43
  %460 = fmul double %457, %459
  store double %460, ptr %458, align 8, !tbaa !43
  %461 = fdiv double %457, %231
  %462 = getelementptr inbounds nuw i8, ptr %450, i64 48
  %463 = load double, ptr %462, align 8, !tbaa !43
  %464 = fmul double %461, %463
  store double %464, ptr %462, align 8, !tbaa !43
  %465 = add nuw nsw i64 %446, 1
  %466 = icmp slt i64 %446, %164
  br i1 %466, label %445, label %309, !llvm.loop !173

467:                                              ; preds = %309
  %468 = getelementptr inbounds nuw i8, ptr %163, i64 2152
  %469 = load ptr, ptr %468, align 8, !tbaa !57
  %470 = getelementptr inbounds nuw double, ptr %469, i64 %6
  %471 = getelementptr inbounds nuw i8, ptr %163, i64 2144
  %472 = load ptr, ptr %471, align 16, !tbaa !47
  %473 = getelementptr inbounds nuw double, ptr %472, i64 %6
  %474 = getelementptr inbounds nuw i8, ptr %163, i64 2136
  %475 = load ptr, ptr %474, align 8, !tbaa !58
  %476 = getelementptr inbounds nuw double, ptr %475, i64 %6
  %477 = getelementptr inbounds nuw i8, ptr %163, i64 2176
  %478 = load ptr, ptr %477, align 16, !tbaa !48
  %479 = getelementptr inbounds nuw double, ptr %478, i64 %6
  %480 = getelementptr inbounds nuw i8, ptr %163, i64 2168
  %481 = load ptr, ptr %480, align 8, !tbaa !68
  %482 = getelementptr inbounds nuw double, ptr %481, i64 %6
  br label %496

483:                                              ; preds = %496, %309
  %484 = icmp slt i64 %165, 0
  br i1 %484, label %557, label %485

485:                                              ; preds = %483
  %486 = getelementptr inbounds nuw i8, ptr %163, i64 2320
  %487 = load ptr, ptr %486, align 16, !tbaa !60
  %488 = getelementptr inbounds nuw double, ptr %487, i64 %6
  %489 = getelementptr inbounds nuw i8, ptr %163, i64 2312
  %490 = load ptr, ptr %489, align 8, !tbaa !50
  %491 = getelementptr inbounds nuw double, ptr %490, i64 %6
  %492 = icmp eq i64 %165, 0
  br i1 %492, label %505, label %493

493:                                              ; preds = %485
  %494 = add nuw i64 %165, 1
  %495 = and i64 %494, -2
  br label %530

496:                                              ; preds = %467, %496
  %497 = phi i64 [ 0, %467 ], [ %503, %496 ]
  %498 = getelementptr inbounds nuw <2 x double>, ptr %470, i64 %497
  store double %230, ptr %498, align 8, !tbaa !43
  %499 = getelementptr inbounds nuw <2 x double>, ptr %473, i64 %497
  store double %230, ptr %499, align 8, !tbaa !43
  %500 = getelementptr inbounds nuw <2 x double>, ptr %476, i64 %497
  store double %230, ptr %500, align 8, !tbaa !43
  %501 = getelementptr inbounds nuw <2 x double>, ptr %479, i64 %497
  store double 1.000000e+00, ptr %501, align 8, !tbaa !43
  %502 = getelementptr inbounds nuw <2 x double>, ptr %482, i64 %497
  store double 1.000000e+00, ptr %502, align 8, !tbaa !43
  %503 = add nuw nsw i64 %497, 1
  %504 = icmp eq i64 %503, %164
  br i1 %504, label %483, label %496, !llvm.loop !174

505:                                              ; preds = %544, %485
  %506 = phi i64 [ 0, %485 ], [ %548, %544 ]
  %507 = and i64 %165, 1
  %508 = icmp eq i64 %507, 0
  br i1 %508, label %509, label %517

509:                                              ; preds = %505
  %510 = icmp slt i64 %506, %165
  br i1 %510, label %513, label %511

511:                                              ; preds = %509
  %512 = load double, ptr %329, align 8, !tbaa !43
  br label %513

513:                                              ; preds = %511, %509
  %514 = phi double [ %512, %511 ], [ %324, %509 ]
  %515 = getelementptr inbounds nuw <2 x double>, ptr %488, i64 %506
  store double %514, ptr %515, align 8, !tbaa !43
  %516 = getelementptr inbounds nuw <2 x double>, ptr %491, i64 %506
  store double %514, ptr %516, align 8, !tbaa !43
  br label %517

517:                                              ; preds = %505, %513
  %518 = icmp eq i64 %165, 0
  br i1 %518, label %557, label %519

519:                                              ; preds = %517
  %520 = getelementptr inbounds nuw i8, ptr %163, i64 2272
  %521 = load ptr, ptr %520, align 16, !tbaa !62
  %522 = getelementptr inbounds nuw double, ptr %521, i64 %6
  %523 = getelementptr inbounds nuw i8, ptr %163, i64 2264
  %524 = load ptr, ptr %523, align 8, !tbaa !51
  %525 = getelementptr inbounds nuw double, ptr %524, i64 %6
  %526 = and i64 %165, 1
  %527 = icmp eq i64 %165, 1
  br i1 %527, label %551, label %528

528:                                              ; preds = %519
  %529 = and i64 %165, 9223372036854775806
  br label %561

530:                                              ; preds = %544, %493
  %531 = phi i64 [ 0, %493 ], [ %548, %544 ]
  %532 = phi i64 [ 0, %493 ], [ %549, %544 ]
  %533 = icmp slt i64 %531, %165
  br i1 %533, label %536, label %534

534:                                              ; preds = %530
  %535 = load double, ptr %329, align 8, !tbaa !43
  br label %536

536:                                              ; preds = %530, %534
  %537 = phi double [ %535, %534 ], [ %324, %530 ]
  %538 = getelementptr inbounds nuw <2 x double>, ptr %488, i64 %531
  store double %537, ptr %538, align 8, !tbaa !43
  %539 = getelementptr inbounds nuw <2 x double>, ptr %491, i64 %531
  store double %537, ptr %539, align 8, !tbaa !43
  %540 = or disjoint i64 %531, 1
  %541 = icmp slt i64 %540, %165
  br i1 %541, label %544, label %542

542:                                              ; preds = %536
  %543 = load double, ptr %329, align 8, !tbaa !43
  br label %544

544:                                              ; preds = %542, %536
  %545 = phi double [ %543, %542 ], [ %324, %536 ]
  %546 = getelementptr inbounds nuw <2 x double>, ptr %488, i64 %540
  store double %545, ptr %546, align 8, !tbaa !43
  %547 = getelementptr inbounds nuw <2 x double>, ptr %491, i64 %540
  store double %545, ptr %547, align 8, !tbaa !43
  %548 = add nuw i64 %531, 2
  %549 = add i64 %532, 2
  %550 = icmp eq i64 %549, %495
  br i1 %550, label %505, label %530, !llvm.loop !175

551:                                              ; preds = %561, %519
  %552 = phi i64 [ 0, %519 ], [ %569, %561 ]
  %553 = icmp eq i64 %526, 0
  br i1 %553, label %557, label %554

554:                                              ; preds = %551
  %555 = getelementptr inbounds nuw <2 x double>, ptr %522, i64 %552
  store double %230, ptr %555, align 8, !tbaa !43
  %556 = getelementptr inbounds nuw <2 x double>, ptr %525, i64 %552
  store double %230, ptr %556, align 8, !tbaa !43
  br label %557

557:                                              ; preds = %554, %551, %483, %517
  %558 = add nuw nsw i64 %162, 1
  %559 = load i64, ptr %27, align 8, !tbaa !20
  %560 = icmp slt i64 %558, %559
  br i1 %560, label %161, label %62, !llvm.loop !176

561:                                              ; preds = %561, %528
  %562 = phi i64 [ 0, %528 ], [ %569, %561 ]
  %563 = phi i64 [ 0, %528 ], [ %570, %561 ]
  %564 = getelementptr inbounds nuw <2 x double>, ptr %522, i64 %562
  store double %230, ptr %564, align 8, !tbaa !43
  %565 = getelementptr inbounds nuw <2 x double>, ptr %525, i64 %562
  store double %230, ptr %565, align 8, !tbaa !43
  %566 = or disjoint i64 %562, 1
  %567 = getelementptr inbounds nuw <2 x double>, ptr %522, i64 %566
  store double %230, ptr %567, align 8, !tbaa !43
  %568 = getelementptr inbounds nuw <2 x double>, ptr %525, i64 %566
  store double %230, ptr %568, align 8, !tbaa !43
  %569 = add nuw nsw i64 %562, 2
  %570 = add i64 %563, 2
  %571 = icmp eq i64 %570, %529
  br i1 %571, label %551, label %561, !llvm.loop !177
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 16 dereferenceable(1600) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !178
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !179
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw [2 x i64], ptr %9, i64 0, i64 %10
  %12 = load i64, ptr %11, align 8, !tbaa !30
  %13 = getelementptr inbounds i64, ptr %8, i64 %12
  %14 = load i64, ptr %13, align 8, !tbaa !30
  %15 = mul nsw i64 %14, 48
  %16 = getelementptr inbounds i8, ptr %6, i64 %15
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %18 = getelementptr inbounds nuw double, ptr %17, i64 %10
  %19 = load double, ptr %18, align 8, !tbaa !43
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !180
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %26 = getelementptr inbounds nuw double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !43
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %29 = getelementptr inbounds nuw double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !43
  %31 = fsub double %27, %30
  %32 = icmp sgt i64 %24, %20
  br i1 %32, label %33, label %69

33:                                               ; preds = %3
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 992
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
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %73 = getelementptr inbounds nuw double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !43
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 1072
  %76 = getelementptr inbounds nuw double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !43
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 1568
  %78 = getelementptr inbounds nuw [2 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !43
  br label %292

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !43
  %82 = load double, ptr %35, align 8, !tbaa !43
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 1072
  %84 = getelementptr inbounds nuw double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !43
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 1136
  %86 = getelementptr inbounds nuw double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !43
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !43
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1088
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !43
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !43
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 1104
  %94 = getelementptr inbounds nuw double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !43
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !43
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 1120
  %98 = getelementptr inbounds nuw double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !43
  %99 = load double, ptr %80, align 8, !tbaa !43
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %102 = getelementptr inbounds nuw double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !43
  %104 = fcmp oeq double %103, 0.000000e+00
  %105 = select i1 %100, i1 %104, i1 false
  br i1 %105, label %106, label %223

106:                                              ; preds = %79
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %108 = load i64, ptr %107, align 8, !tbaa !20
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %174

110:                                              ; preds = %106
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1592
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
  %221 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %222 = getelementptr inbounds nuw double, ptr %221, i64 %10
  store double %220, ptr %222, align 8, !tbaa !43
  br label %223

223:                                              ; preds = %79, %174
  %224 = fcmp une double %99, %103
  br i1 %224, label %225, label %264

225:                                              ; preds = %223
  %226 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %227 = getelementptr inbounds nuw double, ptr %226, i64 %10
  store double %99, ptr %227, align 8, !tbaa !43
  %228 = getelementptr inbounds nuw i8, ptr %0, i64 1296
  %229 = getelementptr inbounds nuw double, ptr %228, i64 %10
  store double %82, ptr %229, align 8, !tbaa !43
  %230 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %231 = getelementptr inbounds nuw double, ptr %230, i64 %10
  %232 = load double, ptr %231, align 8, !tbaa !43
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %234 = getelementptr inbounds nuw double, ptr %233, i64 %10
  store double %232, ptr %234, align 8, !tbaa !43
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %236 = getelementptr inbounds nuw i64, ptr %235, i64 %10
  store i64 -1, ptr %236, align 8, !tbaa !30
  %237 = fcmp oeq double %99, 0.000000e+00
  %238 = fcmp oeq double %99, 3.000000e+00
  %239 = or i1 %237, %238
  br i1 %239, label %240, label %248

240:                                              ; preds = %225
  %241 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %242 = getelementptr inbounds nuw double, ptr %241, i64 %10
  store double %30, ptr %242, align 8, !tbaa !43
  store double %30, ptr %26, align 8, !tbaa !43
  %243 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %244 = getelementptr inbounds nuw double, ptr %243, i64 %10
  %245 = load double, ptr %244, align 8, !tbaa !43
  %246 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %247 = getelementptr inbounds nuw double, ptr %246, i64 %10
  store double %245, ptr %247, align 8, !tbaa !43
  br label %248

248:                                              ; preds = %225, %240
  %249 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %250 = load i64, ptr %249, align 8, !tbaa !20
  %251 = icmp sgt i64 %250, 0
  br i1 %251, label %252, label %264

252:                                              ; preds = %248
  %253 = getelementptr inbounds nuw i8, ptr %0, i64 1592
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
  %267 = getelementptr inbounds nuw i8, ptr %0, i64 752
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
  %279 = getelementptr inbounds nuw i8, ptr %0, i64 1440
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
  %289 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %290 = load <2 x i64>, ptr %289, align 16, !tbaa !26
  %291 = or <2 x i64> %284, %290
  store <2 x i64> %291, ptr %289, align 16, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  br label %292

292:                                              ; preds = %264, %69
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(read, argmem: readwrite, inaccessiblemem: none)
define internal fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr nocapture noundef nonnull align 16 dereferenceable(1600) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, <2 x i64> noundef %3) unnamed_addr #4 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %6 = load <2 x double>, ptr %5, align 16, !tbaa !26
  %7 = getelementptr inbounds nuw i8, ptr %0, i64 1008
  %8 = load <2 x double>, ptr %7, align 16, !tbaa !26
  %9 = fadd <2 x double> %6, %8
  %10 = zext nneg i32 %2 to i64
  %11 = getelementptr inbounds nuw i8, ptr %1, i64 136
  %12 = load ptr, ptr %11, align 8
  %13 = getelementptr inbounds nuw i8, ptr %0, i64 1520
  %14 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %15 = load ptr, ptr %14, align 8
  %16 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %17 = load ptr, ptr %16, align 8
  %18 = extractelement <2 x i64> %3, i64 0
  %19 = icmp eq i64 %18, 0
  br i1 %19, label %84, label %20

20:                                               ; preds = %4
  %21 = getelementptr inbounds nuw i8, ptr %0, i64 1488
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
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1496
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
!16 = !{!17, !6, i64 592}
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 592, !6, i64 600, !6, i64 608, !6, i64 616, !6, i64 624, !6, i64 632, !7, i64 640, !7, i64 656, !7, i64 752, !7, i64 848, !7, i64 944, !7, i64 960, !7, i64 976, !7, i64 992, !7, i64 1008, !7, i64 1024, !7, i64 1040, !7, i64 1056, !7, i64 1072, !7, i64 1088, !7, i64 1104, !7, i64 1120, !7, i64 1136, !7, i64 1152, !7, i64 1168, !7, i64 1184, !7, i64 1200, !7, i64 1216, !7, i64 1232, !7, i64 1248, !7, i64 1264, !7, i64 1280, !7, i64 1296, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1520, !7, i64 1552, !7, i64 1568, !11, i64 1584, !19, i64 1592}
!18 = !{!"_ZTS9CookGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560, !7, i64 576}
!19 = !{!"p1 _ZTS5Piece", !11, i64 0}
!20 = !{!17, !6, i64 600}
!21 = !{!17, !6, i64 608}
!22 = !{!17, !6, i64 616}
!23 = !{!5, !6, i64 32}
!24 = !{!17, !6, i64 624}
!25 = !{!5, !9, i64 64}
!26 = !{!7, !7, i64 0}
!27 = !{!17, !6, i64 632}
!28 = !{!17, !19, i64 1592}
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
!39 = !{!17, !11, i64 1584}
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
