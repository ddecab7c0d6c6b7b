; Made by scripts/lanes.py from sources of sha256 7f08506d2f446d8fee84825fa67b816dadaff9e8f691f7d93f32887320d047dd.
%struct.Piece = type <{ %struct.PieceGiven, [14 x <2 x double>], [14 x <2 x double>], [14 x <2 x double>], <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, <2 x double>, %struct.Flash, <2 x double>, <2 x i64>, <2 x i64>, <2 x i64>, i64, [2 x ptr], ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, ptr, [8 x i8] }>
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
  %12 = add i64 %11, 2848
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
  %43 = getelementptr inbounds nuw i8, ptr %38, i64 2152
  %44 = getelementptr inbounds nuw i8, ptr %38, i64 2160
  %45 = getelementptr inbounds nuw i8, ptr %38, i64 2168
  %46 = getelementptr inbounds nuw i8, ptr %38, i64 2176
  %47 = getelementptr inbounds nuw i8, ptr %38, i64 2184
  %48 = getelementptr inbounds nuw i8, ptr %38, i64 2192
  %49 = getelementptr inbounds nuw i8, ptr %38, i64 2200
  %50 = getelementptr inbounds nuw i8, ptr %38, i64 2208
  %51 = getelementptr inbounds nuw i8, ptr %38, i64 2216
  %52 = getelementptr inbounds nuw i8, ptr %38, i64 2224
  %53 = getelementptr inbounds nuw i8, ptr %38, i64 2232
  %54 = getelementptr inbounds nuw i8, ptr %38, i64 2240
  %55 = getelementptr inbounds nuw i8, ptr %38, i64 2248
  %56 = getelementptr inbounds nuw i8, ptr %38, i64 2256
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
  %71 = getelementptr inbounds nuw i8, ptr %38, i64 2264
  store ptr %70, ptr %71, align 8, !tbaa !36
  %72 = icmp eq i64 %41, 0
  %73 = select i1 %72, i64 0, i64 2
  %74 = shl i64 %33, %73
  %75 = getelementptr inbounds <2 x double>, ptr %70, i64 %74
  %76 = getelementptr inbounds nuw i8, ptr %38, i64 2272
  %77 = getelementptr inbounds nuw i8, ptr %38, i64 2280
  %78 = getelementptr inbounds nuw i8, ptr %38, i64 2288
  %79 = getelementptr inbounds nuw i8, ptr %38, i64 2296
  %80 = getelementptr inbounds nuw i8, ptr %38, i64 2304
  %81 = getelementptr inbounds nuw i8, ptr %38, i64 2312
  %82 = getelementptr inbounds nuw i8, ptr %38, i64 2320
  %83 = getelementptr inbounds nuw i8, ptr %38, i64 2328
  %84 = getelementptr inbounds nuw i8, ptr %38, i64 2336
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
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #7
  br label %114

111:                                              ; preds = %105
  %112 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %113 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0, i64 noundef 0) #7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #7
  store i64 0, ptr %113, align 8, !tbaa !30
  store i64 0, ptr %112, align 8, !tbaa !30
  br label %114

114:                                              ; preds = %111, %110
  %115 = load i64, ptr %26, align 8, !tbaa !27
  %116 = load i64, ptr %0, align 8, !tbaa !40
  %117 = icmp slt i64 %115, %116
  br i1 %117, label %121, label %118

118:                                              ; preds = %114
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1, i64 noundef 0) #7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #7
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 1416
  store i64 0, ptr %119, align 8, !tbaa !30
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 1432
  store i64 0, ptr %120, align 8, !tbaa !30
  br label %122

121:                                              ; preds = %114
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #7
  br label %122

122:                                              ; preds = %118, %121, %3
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %126 = load i64, ptr %124, align 8, !tbaa !41
  %127 = load i64, ptr %125, align 8, !tbaa !42
  %128 = sub nsw i64 %126, %127
  %129 = icmp slt i64 %128, 4
  br i1 %129, label %5879, label %130

130:                                              ; preds = %122
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 1568
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 608
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 616
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1488
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 216
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 1168
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 1184
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 1248
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 1328
  %141 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 592
  %143 = getelementptr inbounds nuw i8, ptr %1, i64 1592
  %144 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %145 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 632
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 480
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 496
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 992
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 1296
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 1232
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 1040
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 416
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 1440
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 16
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 32
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 1456
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 1472
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 600
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 1072
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 1136
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 1280
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 1008
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 1264
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 944
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 976
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 1392
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 352
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 368
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 1344
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 400
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 528
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 304
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 288
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 224
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 240
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 208
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 272
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 1200
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 624
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 432
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 1312
  %224 = getelementptr inbounds nuw i8, ptr %1, i64 1104
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 1120
  %226 = getelementptr inbounds nuw i8, ptr %1, i64 464
  %227 = getelementptr inbounds nuw i8, ptr %1, i64 1584
  %228 = getelementptr inbounds nuw i8, ptr %1, i64 1056
  %229 = getelementptr inbounds nuw i8, ptr %1, i64 1504
  %230 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %231 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %232 = getelementptr inbounds nuw i8, ptr %0, i64 168
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

266:                                              ; preds = %526, %130
  %267 = phi i1 [ true, %130 ], [ %529, %526 ]
  %268 = phi i64 [ 0, %130 ], [ %527, %526 ]
  %269 = phi i1 [ true, %130 ], [ %528, %526 ]
  %270 = getelementptr inbounds nuw i64, ptr %123, i64 %268
  %271 = load i64, ptr %270, align 8, !tbaa !30
  %272 = icmp eq i64 %271, 0
  br i1 %272, label %524, label %273

273:                                              ; preds = %266
  %274 = getelementptr inbounds nuw [2 x double], ptr %131, i64 0, i64 %268
  %275 = load double, ptr %274, align 8, !tbaa !43
  %276 = fcmp oeq double %275, 0.000000e+00
  br i1 %276, label %524, label %277

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
  %299 = load i64, ptr %141, align 8, !tbaa !45
  %300 = icmp eq i64 %299, 0
  br i1 %300, label %508, label %301

301:                                              ; preds = %277
  %302 = load i64, ptr %142, align 16, !tbaa !16
  %303 = icmp sgt i64 %302, 0
  br i1 %303, label %304, label %508

304:                                              ; preds = %301
  %305 = load ptr, ptr %143, align 8, !tbaa !28
  %306 = load ptr, ptr %144, align 8, !tbaa !46
  %307 = mul nsw i64 %302, %281
  %308 = mul i64 %278, 3
  %309 = load ptr, ptr %145, align 8, !tbaa !47
  %310 = icmp sgt i64 %278, 0
  %311 = getelementptr inbounds nuw double, ptr %4, i64 %268
  %312 = shl i64 %278, 4
  %313 = getelementptr inbounds nuw double, ptr %5, i64 %268
  %314 = icmp sgt i64 %279, 0
  %315 = and i64 %279, 1
  %316 = icmp eq i64 %279, 1
  %317 = and i64 %279, 9223372036854775806
  %318 = icmp eq i64 %315, 0
  br label %319

319:                                              ; preds = %416, %304
  %320 = phi i64 [ 0, %304 ], [ %483, %416 ]
  %321 = getelementptr inbounds nuw %struct.Piece, ptr %305, i64 %320
  %322 = getelementptr inbounds nuw i8, ptr %321, i64 384
  %323 = getelementptr inbounds nuw double, ptr %322, i64 %268
  %324 = load double, ptr %323, align 8, !tbaa !43
  %325 = getelementptr inbounds nuw i8, ptr %321, i64 1152
  %326 = getelementptr inbounds nuw double, ptr %325, i64 %268
  %327 = load double, ptr %326, align 8, !tbaa !43
  %328 = add nsw i64 %320, %307
  %329 = mul i64 %308, %328
  %330 = getelementptr inbounds double, ptr %306, i64 %329
  %331 = mul nsw i64 %328, 40
  %332 = getelementptr inbounds i8, ptr %309, i64 %331
  br i1 %310, label %333, label %350

333:                                              ; preds = %319
  %334 = getelementptr inbounds nuw i8, ptr %321, i64 2160
  %335 = load ptr, ptr %334, align 16, !tbaa !48
  %336 = getelementptr inbounds nuw i8, ptr %321, i64 2192
  %337 = load ptr, ptr %336, align 16, !tbaa !49
  %338 = getelementptr inbounds nuw double, ptr %337, i64 %268
  %339 = getelementptr double, ptr %330, i64 %278
  %340 = getelementptr inbounds nuw i8, ptr %321, i64 1168
  %341 = getelementptr inbounds nuw i8, ptr %321, i64 2248
  %342 = load ptr, ptr %341, align 8, !tbaa !50
  %343 = getelementptr inbounds nuw i8, ptr %321, i64 2128
  %344 = load i64, ptr %343, align 16, !tbaa !31
  %345 = getelementptr inbounds nuw i8, ptr %321, i64 96
  %346 = getelementptr inbounds nuw i8, ptr %321, i64 112
  %347 = getelementptr inbounds nuw i8, ptr %321, i64 128
  %348 = getelementptr inbounds nuw i8, ptr %321, i64 160
  %349 = getelementptr i8, ptr %330, i64 %312
  br label %363

350:                                              ; preds = %392, %319
  %351 = phi double [ %327, %319 ], [ %399, %392 ]
  br i1 %314, label %352, label %416

352:                                              ; preds = %350
  %353 = getelementptr inbounds nuw i8, ptr %321, i64 2328
  %354 = load ptr, ptr %353, align 8, !tbaa !51
  %355 = getelementptr inbounds nuw double, ptr %354, i64 %268
  %356 = getelementptr inbounds nuw i8, ptr %321, i64 192
  %357 = getelementptr inbounds nuw double, ptr %356, i64 %268
  %358 = load double, ptr %357, align 8, !tbaa !43
  %359 = getelementptr inbounds nuw i8, ptr %321, i64 2280
  %360 = load ptr, ptr %359, align 8, !tbaa !52
  %361 = getelementptr inbounds nuw double, ptr %360, i64 %268
  %362 = load double, ptr %355, align 8, !tbaa !43
  br i1 %316, label %402, label %485

363:                                              ; preds = %392, %333
  %364 = phi double [ %327, %333 ], [ %399, %392 ]
  %365 = phi i64 [ 0, %333 ], [ %400, %392 ]
  %366 = getelementptr inbounds nuw <2 x double>, ptr %335, i64 %365
  %367 = getelementptr inbounds nuw double, ptr %366, i64 %268
  %368 = load double, ptr %367, align 8, !tbaa !43
  %369 = getelementptr inbounds nuw double, ptr %330, i64 %365
  store double %368, ptr %369, align 8, !tbaa !43
  %370 = getelementptr inbounds nuw <2 x double>, ptr %338, i64 %365
  %371 = load double, ptr %370, align 8, !tbaa !43
  %372 = getelementptr double, ptr %339, i64 %365
  store double %371, ptr %372, align 8, !tbaa !43
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  %373 = load <2 x double>, ptr %340, align 16, !tbaa !26
  %374 = getelementptr inbounds nuw <2 x double>, ptr %342, i64 %365
  %375 = load <2 x double>, ptr %374, align 16, !tbaa !26
  %376 = icmp slt i64 %365, %344
  %377 = load <2 x double>, ptr %322, align 16
  %378 = fsub <2 x double> %373, %377
  %379 = select i1 %376, <2 x double> %377, <2 x double> %378
  %380 = fmul <2 x double> %375, %379
  store <2 x double> %380, ptr %4, align 16, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %5) #8
  %381 = load <2 x double>, ptr %366, align 16, !tbaa !26
  br i1 %376, label %382, label %384

382:                                              ; preds = %363
  %383 = load <2 x double>, ptr %348, align 16, !tbaa !26
  br label %392

384:                                              ; preds = %363
  %385 = load <2 x double>, ptr %345, align 16, !tbaa !26
  %386 = load <2 x double>, ptr %346, align 16, !tbaa !26
  %387 = load <2 x double>, ptr %347, align 16, !tbaa !26
  %388 = fmul <2 x double> %381, %387
  %389 = fmul <2 x double> %388, splat (double 0x3FD5555555555555)
  %390 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %386, <2 x double> splat (double 5.000000e-01), <2 x double> %389)
  %391 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %381, <2 x double> %390, <2 x double> %385)
  br label %392

392:                                              ; preds = %384, %382
  %393 = phi <2 x double> [ %383, %382 ], [ %391, %384 ]
  %394 = fmul <2 x double> %381, %393
  %395 = fmul <2 x double> %380, %394
  store <2 x double> %395, ptr %5, align 16, !tbaa !26
  %396 = load double, ptr %311, align 8, !tbaa !43
  %397 = getelementptr double, ptr %349, i64 %365
  store double %396, ptr %397, align 8, !tbaa !43
  %398 = load double, ptr %313, align 8, !tbaa !43
  %399 = fadd double %364, %398
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #8
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  %400 = add nuw nsw i64 %365, 1
  %401 = icmp eq i64 %400, %278
  br i1 %401, label %350, label %363, !llvm.loop !53

402:                                              ; preds = %485, %352
  %403 = phi double [ poison, %352 ], [ %505, %485 ]
  %404 = phi double [ %362, %352 ], [ %500, %485 ]
  %405 = phi double [ %351, %352 ], [ %505, %485 ]
  %406 = phi i64 [ 0, %352 ], [ %498, %485 ]
  br i1 %318, label %416, label %407

407:                                              ; preds = %402
  %408 = getelementptr <2 x double>, ptr %355, i64 %406
  %409 = getelementptr i8, ptr %408, i64 16
  %410 = load double, ptr %409, align 8, !tbaa !43
  %411 = fsub double %410, %404
  %412 = fmul double %358, %411
  %413 = getelementptr inbounds nuw <2 x double>, ptr %361, i64 %406
  %414 = load double, ptr %413, align 8, !tbaa !43
  %415 = tail call double @llvm.fmuladd.f64(double %412, double %414, double %405)
  br label %416

416:                                              ; preds = %407, %402, %350
  %417 = phi double [ %351, %350 ], [ %403, %402 ], [ %415, %407 ]
  %418 = getelementptr inbounds nuw i8, ptr %321, i64 240
  %419 = getelementptr inbounds nuw double, ptr %418, i64 %268
  %420 = load double, ptr %419, align 8, !tbaa !43
  %421 = getelementptr inbounds nuw i8, ptr %321, i64 96
  %422 = getelementptr inbounds nuw double, ptr %421, i64 %268
  %423 = load double, ptr %422, align 8, !tbaa !43
  %424 = getelementptr inbounds nuw i8, ptr %321, i64 112
  %425 = getelementptr inbounds nuw double, ptr %424, i64 %268
  %426 = load double, ptr %425, align 8, !tbaa !43
  %427 = getelementptr inbounds nuw i8, ptr %321, i64 128
  %428 = getelementptr inbounds nuw double, ptr %427, i64 %268
  %429 = load double, ptr %428, align 8, !tbaa !43
  %430 = fmul double %420, %429
  %431 = fdiv double %430, 3.000000e+00
  %432 = tail call double @llvm.fmuladd.f64(double %426, double 5.000000e-01, double %431)
  %433 = tail call double @llvm.fmuladd.f64(double %420, double %432, double %423)
  %434 = fmul double %420, %433
  %435 = getelementptr inbounds nuw i8, ptr %321, i64 352
  %436 = getelementptr inbounds nuw double, ptr %435, i64 %268
  %437 = load double, ptr %436, align 8, !tbaa !43
  %438 = fsub double %437, %324
  %439 = getelementptr inbounds nuw i8, ptr %321, i64 160
  %440 = getelementptr inbounds nuw double, ptr %439, i64 %268
  %441 = load double, ptr %440, align 8, !tbaa !43
  %442 = fmul double %324, %441
  %443 = fmul double %420, %442
  %444 = tail call double @llvm.fmuladd.f64(double %438, double %434, double %443)
  %445 = getelementptr inbounds nuw i8, ptr %321, i64 1056
  %446 = getelementptr inbounds nuw double, ptr %445, i64 %268
  %447 = load double, ptr %446, align 8, !tbaa !43
  %448 = getelementptr inbounds nuw i8, ptr %321, i64 1072
  %449 = getelementptr inbounds nuw double, ptr %448, i64 %268
  %450 = load double, ptr %449, align 8, !tbaa !43
  %451 = fsub double %447, %450
  %452 = fsub double %417, %444
  %453 = fsub double %451, %452
  %454 = fcmp ogt double %447, 0.000000e+00
  %455 = fneg double %447
  %456 = select i1 %454, double %447, double %455
  %457 = fcmp ogt double %450, 0.000000e+00
  %458 = fneg double %450
  %459 = select i1 %457, double %450, double %458
  %460 = fadd double %456, %459
  %461 = fcmp ogt double %453, 0.000000e+00
  %462 = fneg double %453
  %463 = select i1 %461, double %453, double %462
  %464 = fcmp ogt double %460, 1.000000e+00
  %465 = select i1 %464, double %460, double 1.000000e+00
  %466 = fdiv double %463, %465
  store double %466, ptr %332, align 8, !tbaa !43
  %467 = getelementptr inbounds nuw i8, ptr %321, i64 1040
  %468 = getelementptr inbounds nuw double, ptr %467, i64 %268
  %469 = load double, ptr %468, align 8, !tbaa !43
  %470 = getelementptr inbounds nuw i8, ptr %332, i64 8
  store double %469, ptr %470, align 8, !tbaa !43
  %471 = getelementptr inbounds nuw i8, ptr %321, i64 992
  %472 = getelementptr inbounds nuw double, ptr %471, i64 %268
  %473 = load double, ptr %472, align 8, !tbaa !43
  %474 = getelementptr inbounds nuw i8, ptr %332, i64 16
  store double %473, ptr %474, align 8, !tbaa !43
  %475 = getelementptr inbounds nuw i8, ptr %321, i64 1008
  %476 = getelementptr inbounds nuw double, ptr %475, i64 %268
  %477 = load double, ptr %476, align 8, !tbaa !43
  %478 = getelementptr inbounds nuw i8, ptr %332, i64 24
  store double %477, ptr %478, align 8, !tbaa !43
  %479 = getelementptr inbounds nuw i8, ptr %321, i64 976
  %480 = getelementptr inbounds nuw double, ptr %479, i64 %268
  %481 = load double, ptr %480, align 8, !tbaa !43
  %482 = getelementptr inbounds nuw i8, ptr %332, i64 32
  store double %481, ptr %482, align 8, !tbaa !43
  %483 = add nuw nsw i64 %320, 1
  %484 = icmp eq i64 %483, %302
  br i1 %484, label %508, label %319, !llvm.loop !54

485:                                              ; preds = %352, %485
  %486 = phi double [ %500, %485 ], [ %362, %352 ]
  %487 = phi double [ %505, %485 ], [ %351, %352 ]
  %488 = phi i64 [ %498, %485 ], [ 0, %352 ]
  %489 = phi i64 [ %506, %485 ], [ 0, %352 ]
  %490 = or disjoint i64 %488, 1
  %491 = getelementptr inbounds nuw <2 x double>, ptr %355, i64 %490
  %492 = load double, ptr %491, align 8, !tbaa !43
  %493 = fsub double %492, %486
  %494 = fmul double %358, %493
  %495 = getelementptr inbounds nuw <2 x double>, ptr %361, i64 %488
  %496 = load double, ptr %495, align 8, !tbaa !43
  %497 = tail call double @llvm.fmuladd.f64(double %494, double %496, double %487)
  %498 = add nuw nsw i64 %488, 2
  %499 = getelementptr inbounds nuw <2 x double>, ptr %355, i64 %498
  %500 = load double, ptr %499, align 8, !tbaa !43
  %501 = fsub double %500, %492
  %502 = fmul double %358, %501
  %503 = getelementptr inbounds nuw <2 x double>, ptr %361, i64 %490
  %504 = load double, ptr %503, align 8, !tbaa !43
  %505 = tail call double @llvm.fmuladd.f64(double %502, double %504, double %497)
  %506 = add i64 %489, 2
  %507 = icmp eq i64 %506, %317
  br i1 %507, label %402, label %485, !llvm.loop !55

508:                                              ; preds = %416, %277, %301
  %509 = load i64, ptr %146, align 8, !tbaa !27
  %510 = load i64, ptr %0, align 8, !tbaa !40
  %511 = icmp slt i64 %509, %510
  br i1 %511, label %514, label %512

512:                                              ; preds = %508
  store i64 0, ptr %270, align 8, !tbaa !30
  %513 = getelementptr inbounds nuw i64, ptr %147, i64 %268
  store i64 0, ptr %513, align 8, !tbaa !30
  br label %521

514:                                              ; preds = %508
  %515 = trunc nuw nsw i64 %268 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef %515) #7
  %516 = load i64, ptr %270, align 8, !tbaa !30
  %517 = icmp eq i64 %516, 0
  br i1 %517, label %521, label %518

518:                                              ; preds = %514
  %519 = load double, ptr %274, align 8, !tbaa !43
  %520 = fcmp oeq double %519, 0.000000e+00
  br label %521

521:                                              ; preds = %512, %518, %514
  %522 = phi i1 [ true, %514 ], [ %520, %518 ], [ true, %512 ]
  %523 = and i1 %269, %522
  br label %524

524:                                              ; preds = %521, %273, %266
  %525 = phi i1 [ %269, %273 ], [ %523, %521 ], [ %269, %266 ]
  br i1 %267, label %526, label %530

526:                                              ; preds = %524, %531
  %527 = phi i64 [ 1, %524 ], [ 0, %531 ]
  %528 = phi i1 [ %525, %524 ], [ true, %531 ]
  %529 = xor i1 %267, true
  br label %266, !llvm.loop !56

530:                                              ; preds = %524
  br i1 %525, label %536, label %531

531:                                              ; preds = %5860, %5878, %5875, %4041, %4385, %530
  %532 = load i64, ptr %124, align 8, !tbaa !41
  %533 = load i64, ptr %125, align 8, !tbaa !42
  %534 = sub nsw i64 %532, %533
  %535 = icmp slt i64 %534, 4
  br i1 %535, label %5879, label %526

536:                                              ; preds = %530
  %537 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %538 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %537)
  %539 = icmp eq i64 %538, 0
  br i1 %539, label %5879, label %540

540:                                              ; preds = %536
  %541 = load <2 x i64>, ptr %147, align 16, !tbaa !26
  %542 = and <2 x i64> %541, %537
  %543 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %542)
  %544 = icmp eq i64 %543, 0
  %545 = load i64, ptr %170, align 8, !tbaa !20
  br i1 %544, label %1500, label %546

546:                                              ; preds = %540
  %547 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %548 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %549 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %550 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %551 = fsub <2 x double> %549, %550
  %552 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %548, <2 x double> %551, <2 x double> %547)
  %553 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %554 = fcmp une <2 x double> %553, splat (double 2.000000e+00)
  %555 = select <2 x i1> %554, <2 x double> splat (double 1.000000e+00), <2 x double> splat (double 5.000000e-01)
  %556 = fmul <2 x double> %552, %555
  %557 = load <2 x double>, ptr %153, align 16, !tbaa !26
  %558 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %559 = fcmp olt <2 x double> %557, %558
  %560 = select <2 x i1> %559, <2 x double> %557, <2 x double> %558
  %561 = fcmp olt <2 x double> %560, %556
  %562 = select <2 x i1> %561, <2 x double> %560, <2 x double> %556
  %563 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %564 = fmul <2 x double> %563, splat (double 5.000000e-01)
  %565 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %566 = load <2 x i64>, ptr %157, align 16, !tbaa !26
  %567 = fneg <2 x double> %564
  %568 = icmp eq <2 x i64> %566, zeroinitializer
  %569 = select <2 x i1> %568, <2 x double> %567, <2 x double> %564
  %570 = fadd <2 x double> %565, %569
  %571 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %572 = fsub <2 x double> %570, %571
  %573 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %574 = select <2 x i1> %568, <2 x double> zeroinitializer, <2 x double> %573
  %575 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %576 = fsub <2 x double> %574, %575
  %577 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %578 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %579 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %580 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %579, <2 x double> %571, <2 x double> %578)
  %581 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %582 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %577, <2 x double> %580, <2 x double> %581)
  %583 = fdiv <2 x double> %576, %582
  %584 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %585 = fsub <2 x double> %571, %584
  %586 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %587 = fdiv <2 x double> %585, %586
  %588 = fsub <2 x double> %583, %587
  %589 = fdiv <2 x double> %588, %586
  %590 = fdiv <2 x double> %572, %583
  %591 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %592 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %593 = or <2 x i64> %592, %591
  %594 = icmp eq <2 x i64> %593, zeroinitializer
  %595 = select <2 x i1> %594, <2 x double> %589, <2 x double> zeroinitializer
  %596 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %595, <2 x double> %590, <2 x double> %583)
  %597 = fdiv <2 x double> %572, %596
  %598 = fcmp ule <2 x double> %597, zeroinitializer
  %599 = select <2 x i1> %598, <2 x double> %590, <2 x double> %597
  %600 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %601 = fcmp une <2 x double> %600, zeroinitializer
  %602 = load <2 x double>, ptr %169, align 16, !tbaa !26
  %603 = fcmp une <2 x double> %602, zeroinitializer
  %604 = fcmp ule <2 x double> %573, zeroinitializer
  %605 = or <2 x i1> %604, %601
  %606 = fcmp ule <2 x double> %590, zeroinitializer
  %607 = or <2 x i1> %606, %605
  %608 = or <2 x i1> %603, %607
  %609 = select <2 x i1> %608, <2 x double> splat (double 1.000000e+09), <2 x double> %599
  %610 = icmp sgt i64 %545, 0
  br i1 %610, label %611, label %679

611:                                              ; preds = %546
  %612 = load ptr, ptr %143, align 8, !tbaa !28
  %613 = fmul <2 x double> %586, splat (double 3.000000e+00)
  br label %614

614:                                              ; preds = %611, %614
  %615 = phi <2 x double> [ %609, %611 ], [ %676, %614 ]
  %616 = phi i64 [ 0, %611 ], [ %677, %614 ]
  %617 = getelementptr inbounds nuw %struct.Piece, ptr %612, i64 %616
  %618 = getelementptr inbounds nuw i8, ptr %617, i64 976
  %619 = load <2 x double>, ptr %618, align 16, !tbaa !26
  %620 = getelementptr inbounds nuw i8, ptr %617, i64 368
  %621 = load <2 x double>, ptr %620, align 16, !tbaa !26
  %622 = fsub <2 x double> %619, %621
  %623 = getelementptr inbounds nuw i8, ptr %617, i64 208
  %624 = load <2 x double>, ptr %623, align 16, !tbaa !26
  %625 = fmul <2 x double> %622, %624
  %626 = getelementptr inbounds nuw i8, ptr %617, i64 400
  %627 = load <2 x double>, ptr %626, align 16, !tbaa !26
  %628 = getelementptr inbounds nuw i8, ptr %617, i64 1040
  %629 = load <2 x double>, ptr %628, align 16, !tbaa !26
  %630 = fsub <2 x double> %627, %629
  %631 = getelementptr inbounds nuw i8, ptr %617, i64 2080
  %632 = load <2 x i64>, ptr %631, align 16, !tbaa !26
  %633 = getelementptr inbounds nuw i8, ptr %617, i64 1904
  %634 = load <2 x double>, ptr %633, align 16, !tbaa !26
  %635 = fcmp une <2 x double> %634, splat (double 1.000000e+00)
  %636 = select <2 x i1> %635, <2 x double> %625, <2 x double> %630
  %637 = getelementptr inbounds nuw i8, ptr %617, i64 992
  %638 = load <2 x double>, ptr %637, align 16, !tbaa !26
  %639 = icmp eq <2 x i64> %632, zeroinitializer
  %640 = select <2 x i1> %639, <2 x double> %638, <2 x double> %636
  %641 = getelementptr inbounds nuw i8, ptr %617, i64 1504
  %642 = load <2 x double>, ptr %641, align 16, !tbaa !26
  %643 = getelementptr inbounds nuw i8, ptr %617, i64 1520
  %644 = load <2 x double>, ptr %643, align 16, !tbaa !26
  %645 = fadd <2 x double> %642, %644
  %646 = getelementptr inbounds nuw i8, ptr %617, i64 1872
  %647 = load <2 x double>, ptr %646, align 16, !tbaa !26
  %648 = fdiv <2 x double> %647, %586
  %649 = select <2 x i1> %639, <2 x double> %648, <2 x double> zeroinitializer
  %650 = fsub <2 x double> %645, %649
  %651 = fdiv <2 x double> %640, %650
  %652 = getelementptr inbounds nuw i8, ptr %617, i64 1216
  %653 = load <2 x double>, ptr %652, align 16, !tbaa !26
  %654 = fsub <2 x double> %653, %638
  %655 = fdiv <2 x double> %654, %586
  %656 = getelementptr inbounds nuw i8, ptr %617, i64 2096
  %657 = load <2 x i64>, ptr %656, align 16, !tbaa !26
  %658 = or <2 x i64> %657, %632
  %659 = fcmp ule <2 x double> %651, %613
  %660 = fsub <2 x double> %650, %655
  %661 = icmp eq <2 x i64> %658, zeroinitializer
  %662 = select <2 x i1> %659, <2 x i1> %661, <2 x i1> zeroinitializer
  %663 = select <2 x i1> %662, <2 x double> %660, <2 x double> zeroinitializer
  %664 = fdiv <2 x double> %651, %586
  %665 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %663, <2 x double> %664, <2 x double> %650)
  %666 = fdiv <2 x double> %640, %665
  %667 = fcmp ule <2 x double> %666, zeroinitializer
  %668 = select <2 x i1> %667, <2 x double> %651, <2 x double> %666
  %669 = fcmp ule <2 x double> %640, zeroinitializer
  %670 = fcmp ule <2 x double> %650, zeroinitializer
  %671 = or <2 x i1> %669, %670
  %672 = fcmp ogt <2 x double> %668, splat (double 1.000000e-03)
  %673 = select <2 x i1> %672, <2 x double> %668, <2 x double> splat (double 1.000000e-03)
  %674 = select <2 x i1> %671, <2 x double> splat (double 1.000000e+09), <2 x double> %673
  %675 = fcmp olt <2 x double> %615, %674
  %676 = select <2 x i1> %675, <2 x double> %615, <2 x double> %674
  %677 = add nuw nsw i64 %616, 1
  %678 = icmp eq i64 %677, %545
  br i1 %678, label %679, label %614, !llvm.loop !57

679:                                              ; preds = %614, %546
  %680 = phi <2 x double> [ %609, %546 ], [ %676, %614 ]
  %681 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %682 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %683 = fadd <2 x double> %681, %682
  %684 = fsub <2 x double> %683, %549
  %685 = fmul <2 x double> %680, splat (double 1.050000e+00)
  %686 = fcmp ugt <2 x double> %684, %685
  %687 = select <2 x i1> %686, <2 x double> %680, <2 x double> %684
  %688 = fmul <2 x double> %562, splat (double 0x3FF000010C6F7A0B)
  %689 = fcmp ole <2 x double> %687, %688
  %690 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %691 = fcmp ogt <2 x double> %690, %562
  %692 = select <2 x i1> %691, <2 x double> %690, <2 x double> %562
  %693 = icmp ne <2 x i64> %542, zeroinitializer
  %694 = select <2 x i1> %689, <2 x i1> %693, <2 x i1> zeroinitializer
  %695 = select <2 x i1> %694, <2 x double> %692, <2 x double> %690
  store <2 x double> %695, ptr %173, align 16, !tbaa !26
  %696 = fmul <2 x double> %562, splat (double 2.000000e+00)
  %697 = fcmp uge <2 x double> %687, %696
  %698 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %699 = fcmp une <2 x double> %698, zeroinitializer
  %700 = or <2 x i1> %699, %697
  %701 = fmul <2 x double> %687, splat (double 5.000000e-01)
  %702 = select <2 x i1> %700, <2 x double> %562, <2 x double> %701
  %703 = select <2 x i1> %689, <2 x double> %687, <2 x double> %702
  %704 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %705 = icmp eq <2 x i64> %542, zeroinitializer
  %706 = select <2 x i1> %705, <2 x double> %704, <2 x double> %703
  store <2 x double> %706, ptr %174, align 16, !tbaa !26
  %707 = fdiv <2 x double> %706, %586
  %708 = fdiv <2 x double> splat (double 1.000000e+00), %706
  %709 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %707, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %710 = fadd <2 x double> %707, splat (double 1.000000e+00)
  %711 = fdiv <2 x double> %709, %710
  %712 = fmul <2 x double> %708, %711
  %713 = icmp eq <2 x i64> %591, zeroinitializer
  %714 = select <2 x i1> %713, <2 x double> %712, <2 x double> %708
  %715 = fneg <2 x double> %708
  %716 = fneg <2 x double> %710
  %717 = fmul <2 x double> %708, %716
  %718 = select <2 x i1> %713, <2 x double> %717, <2 x double> %715
  %719 = fmul <2 x double> %707, %707
  %720 = fdiv <2 x double> %719, %710
  %721 = fmul <2 x double> %708, %720
  %722 = select <2 x i1> %713, <2 x double> %721, <2 x double> zeroinitializer
  %723 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %724 = select <2 x i1> %705, <2 x double> %723, <2 x double> %714
  store <2 x double> %724, ptr %176, align 16, !tbaa !26
  %725 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %726 = select <2 x i1> %705, <2 x double> %725, <2 x double> %718
  store <2 x double> %726, ptr %177, align 16, !tbaa !26
  %727 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %728 = select <2 x i1> %705, <2 x double> %727, <2 x double> %722
  store <2 x double> %728, ptr %178, align 16, !tbaa !26
  %729 = select <2 x i1> %713, <2 x double> %707, <2 x double> zeroinitializer
  %730 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %729, <2 x double> %585, <2 x double> %571)
  %731 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %732 = select <2 x i1> %705, <2 x double> %731, <2 x double> %730
  %733 = load <2 x double>, ptr %237, align 16, !tbaa !26
  %734 = load <2 x double>, ptr %238, align 16, !tbaa !26
  %735 = fsub <2 x double> %733, %734
  %736 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %729, <2 x double> %735, <2 x double> %733)
  %737 = load <2 x double>, ptr %236, align 16, !tbaa !26
  %738 = select <2 x i1> %705, <2 x double> %737, <2 x double> %736
  store <2 x double> %738, ptr %236, align 16, !tbaa !26
  %739 = load <2 x double>, ptr %240, align 16, !tbaa !26
  %740 = load <2 x double>, ptr %241, align 16, !tbaa !26
  %741 = fsub <2 x double> %739, %740
  %742 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %729, <2 x double> %741, <2 x double> %739)
  %743 = load <2 x double>, ptr %239, align 16, !tbaa !26
  %744 = select <2 x i1> %705, <2 x double> %743, <2 x double> %742
  store <2 x double> %744, ptr %239, align 16, !tbaa !26
  %745 = load <2 x double>, ptr %243, align 16, !tbaa !26
  %746 = load <2 x double>, ptr %244, align 16, !tbaa !26
  %747 = fsub <2 x double> %745, %746
  %748 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %729, <2 x double> %747, <2 x double> %745)
  %749 = load <2 x double>, ptr %242, align 16, !tbaa !26
  %750 = select <2 x i1> %705, <2 x double> %749, <2 x double> %748
  store <2 x double> %750, ptr %242, align 16, !tbaa !26
  %751 = load <2 x double>, ptr %246, align 16, !tbaa !26
  %752 = load <2 x double>, ptr %247, align 16, !tbaa !26
  %753 = fsub <2 x double> %751, %752
  %754 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %729, <2 x double> %753, <2 x double> %751)
  %755 = load <2 x double>, ptr %245, align 16, !tbaa !26
  %756 = select <2 x i1> %705, <2 x double> %755, <2 x double> %754
  store <2 x double> %756, ptr %245, align 16, !tbaa !26
  %757 = load <2 x double>, ptr %249, align 16, !tbaa !26
  %758 = load <2 x double>, ptr %250, align 16, !tbaa !26
  %759 = fsub <2 x double> %757, %758
  %760 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %729, <2 x double> %759, <2 x double> %757)
  %761 = load <2 x double>, ptr %248, align 16, !tbaa !26
  %762 = select <2 x i1> %705, <2 x double> %761, <2 x double> %760
  store <2 x double> %762, ptr %248, align 16, !tbaa !26
  %763 = load <2 x i64>, ptr %157, align 16, !tbaa !26
  %764 = icmp eq <2 x i64> %763, zeroinitializer
  %765 = select <2 x i1> %764, <2 x double> zeroinitializer, <2 x double> %573
  %766 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %767 = fsub <2 x double> %765, %766
  %768 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %769 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %579, <2 x double> %768, <2 x double> %578)
  %770 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %577, <2 x double> %769, <2 x double> %581)
  %771 = fdiv <2 x double> %767, %770
  %772 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %773 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %774 = or <2 x i64> %773, %772
  %775 = and <2 x i64> %774, %542
  %776 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %706, <2 x double> %771, <2 x double> %768)
  %777 = icmp eq <2 x i64> %775, zeroinitializer
  %778 = select <2 x i1> %603, <2 x i1> splat (i1 true), <2 x i1> %777
  %779 = select <2 x i1> %778, <2 x double> %732, <2 x double> %776
  store <2 x double> %779, ptr %179, align 16, !tbaa !26
  %780 = load <2 x double>, ptr %180, align 16, !tbaa !26
  %781 = select <2 x i1> %705, <2 x double> %780, <2 x double> %767
  store <2 x double> %781, ptr %180, align 16, !tbaa !26
  %782 = xor <2 x i64> %773, splat (i64 -1)
  %783 = and <2 x i64> %772, %782
  store <2 x i64> %783, ptr %167, align 16, !tbaa !26
  %784 = load i64, ptr %170, align 8, !tbaa !20
  %785 = icmp sgt i64 %784, 0
  br i1 %785, label %786, label %1487

786:                                              ; preds = %679
  %787 = xor <2 x i64> %542, splat (i64 -1)
  br label %788

788:                                              ; preds = %786, %1444
  %789 = phi i64 [ 0, %786 ], [ %1460, %1444 ]
  %790 = load ptr, ptr %143, align 8, !tbaa !28
  %791 = getelementptr inbounds nuw %struct.Piece, ptr %790, i64 %789
  %792 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %793 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %794 = getelementptr inbounds nuw i8, ptr %791, i64 2096
  %795 = load <2 x i64>, ptr %794, align 16, !tbaa !26
  %796 = fdiv <2 x double> %792, %793
  %797 = fdiv <2 x double> splat (double 1.000000e+00), %792
  %798 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %796, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %799 = fadd <2 x double> %796, splat (double 1.000000e+00)
  %800 = fdiv <2 x double> %798, %799
  %801 = fmul <2 x double> %797, %800
  %802 = icmp eq <2 x i64> %795, zeroinitializer
  %803 = select <2 x i1> %802, <2 x double> %801, <2 x double> %797
  %804 = fneg <2 x double> %797
  %805 = fneg <2 x double> %799
  %806 = fmul <2 x double> %797, %805
  %807 = select <2 x i1> %802, <2 x double> %806, <2 x double> %804
  %808 = fmul <2 x double> %796, %796
  %809 = fdiv <2 x double> %808, %799
  %810 = fmul <2 x double> %797, %809
  %811 = select <2 x i1> %802, <2 x double> %810, <2 x double> zeroinitializer
  %812 = getelementptr inbounds nuw i8, ptr %791, i64 1408
  %813 = load <2 x double>, ptr %812, align 16, !tbaa !26
  %814 = select <2 x i1> %705, <2 x double> %813, <2 x double> %803
  store <2 x double> %814, ptr %812, align 16, !tbaa !26
  %815 = getelementptr inbounds nuw i8, ptr %791, i64 1424
  %816 = load <2 x double>, ptr %815, align 16, !tbaa !26
  %817 = select <2 x i1> %705, <2 x double> %816, <2 x double> %807
  store <2 x double> %817, ptr %815, align 16, !tbaa !26
  %818 = getelementptr inbounds nuw i8, ptr %791, i64 1440
  %819 = load <2 x double>, ptr %818, align 16, !tbaa !26
  %820 = select <2 x i1> %705, <2 x double> %819, <2 x double> %811
  store <2 x double> %820, ptr %818, align 16, !tbaa !26
  %821 = getelementptr inbounds nuw i8, ptr %791, i64 1456
  %822 = fdiv <2 x double> splat (double 1.000000e+00), %803
  %823 = load <2 x double>, ptr %821, align 16, !tbaa !26
  %824 = select <2 x i1> %705, <2 x double> %823, <2 x double> %822
  store <2 x double> %824, ptr %821, align 16, !tbaa !26
  %825 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %826 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %827 = fdiv <2 x double> %825, %826
  %828 = select <2 x i1> %802, <2 x double> %827, <2 x double> zeroinitializer
  %829 = getelementptr inbounds nuw i8, ptr %791, i64 736
  %830 = getelementptr inbounds nuw i8, ptr %791, i64 960
  %831 = getelementptr inbounds nuw i8, ptr %791, i64 1184
  br label %1463

832:                                              ; preds = %1463
  %833 = getelementptr inbounds nuw i8, ptr %791, i64 1520
  %834 = getelementptr inbounds nuw i8, ptr %791, i64 880
  %835 = load <2 x double>, ptr %834, align 16, !tbaa !26
  %836 = fcmp ogt <2 x double> %835, zeroinitializer
  %837 = select <2 x i1> %836, <2 x double> %835, <2 x double> zeroinitializer
  %838 = load <2 x double>, ptr %833, align 16, !tbaa !26
  %839 = select <2 x i1> %705, <2 x double> %838, <2 x double> %837
  store <2 x double> %839, ptr %833, align 16, !tbaa !26
  %840 = getelementptr inbounds nuw i8, ptr %791, i64 96
  %841 = load <2 x double>, ptr %840, align 16, !tbaa !26
  %842 = getelementptr inbounds nuw i8, ptr %791, i64 112
  %843 = load <2 x double>, ptr %842, align 16, !tbaa !26
  %844 = getelementptr inbounds nuw i8, ptr %791, i64 128
  %845 = load <2 x double>, ptr %844, align 16, !tbaa !26
  %846 = getelementptr inbounds nuw i8, ptr %791, i64 160
  %847 = load <2 x double>, ptr %846, align 16, !tbaa !26
  %848 = getelementptr inbounds nuw i8, ptr %791, i64 192
  %849 = load <2 x double>, ptr %848, align 16, !tbaa !26
  %850 = getelementptr inbounds nuw i8, ptr %791, i64 208
  %851 = getelementptr inbounds nuw i8, ptr %791, i64 384
  %852 = load <2 x double>, ptr %851, align 16, !tbaa !26
  %853 = getelementptr inbounds nuw i8, ptr %791, i64 400
  %854 = getelementptr inbounds nuw i8, ptr %791, i64 1168
  %855 = load <2 x double>, ptr %854, align 16, !tbaa !26
  %856 = fsub <2 x double> %855, %852
  %857 = getelementptr inbounds nuw i8, ptr %791, i64 1392
  %858 = load <2 x double>, ptr %857, align 16, !tbaa !26
  %859 = fsub <2 x double> %858, %852
  %860 = load <2 x double>, ptr %815, align 16, !tbaa !26
  %861 = load <2 x double>, ptr %818, align 16, !tbaa !26
  %862 = fmul <2 x double> %856, %860
  %863 = fmul <2 x double> %859, %861
  %864 = fmul <2 x double> %852, %860
  %865 = fmul <2 x double> %847, %864
  %866 = fmul <2 x double> %852, %861
  %867 = fmul <2 x double> %847, %866
  %868 = getelementptr inbounds nuw i8, ptr %791, i64 2160
  %869 = load ptr, ptr %868, align 16, !tbaa !48
  %870 = getelementptr inbounds nuw i8, ptr %791, i64 2168
  %871 = load ptr, ptr %870, align 8, !tbaa !58
  %872 = getelementptr inbounds nuw i8, ptr %791, i64 2248
  %873 = load ptr, ptr %872, align 8, !tbaa !50
  %874 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %875 = and <2 x i64> %874, %787
  %876 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %875)
  %877 = icmp eq i64 %876, 0
  %878 = getelementptr inbounds nuw i8, ptr %791, i64 2152
  %879 = load ptr, ptr %878, align 8, !tbaa !59
  %880 = getelementptr inbounds nuw i8, ptr %791, i64 2176
  %881 = load ptr, ptr %880, align 16, !tbaa !60
  %882 = load i64, ptr %132, align 16, !tbaa !21
  %883 = icmp sgt i64 %882, 0
  br i1 %883, label %884, label %886

884:                                              ; preds = %832
  %885 = getelementptr inbounds nuw i8, ptr %791, i64 2128
  br label %899

886:                                              ; preds = %934, %832
  %887 = fmul <2 x double> %849, %860
  %888 = fmul <2 x double> %849, %861
  %889 = getelementptr inbounds nuw i8, ptr %791, i64 2328
  %890 = load ptr, ptr %889, align 8, !tbaa !51
  %891 = getelementptr inbounds nuw i8, ptr %791, i64 2336
  %892 = load ptr, ptr %891, align 16, !tbaa !61
  %893 = load i64, ptr %133, align 8, !tbaa !22
  %894 = icmp sgt i64 %893, 0
  br i1 %894, label %895, label %968

895:                                              ; preds = %886
  %896 = getelementptr inbounds nuw i8, ptr %791, i64 2280
  %897 = getelementptr inbounds nuw i8, ptr %791, i64 2288
  %898 = getelementptr inbounds nuw i8, ptr %791, i64 2296
  br label %941

899:                                              ; preds = %884, %934
  %900 = phi i64 [ 0, %884 ], [ %938, %934 ]
  %901 = getelementptr inbounds nuw <2 x double>, ptr %869, i64 %900
  %902 = load <2 x double>, ptr %901, align 16, !tbaa !26
  %903 = getelementptr inbounds nuw <2 x double>, ptr %871, i64 %900
  %904 = load <2 x double>, ptr %903, align 16, !tbaa !26
  %905 = fsub <2 x double> %902, %904
  %906 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %828, <2 x double> %905, <2 x double> %902)
  br i1 %877, label %911, label %907

907:                                              ; preds = %899
  %908 = getelementptr inbounds nuw <2 x double>, ptr %879, i64 %900
  %909 = load <2 x double>, ptr %908, align 16, !tbaa !26
  %910 = select <2 x i1> %705, <2 x double> %909, <2 x double> %906
  br label %911

911:                                              ; preds = %907, %899
  %912 = phi <2 x double> [ %910, %907 ], [ %906, %899 ]
  %913 = getelementptr inbounds nuw <2 x double>, ptr %879, i64 %900
  store <2 x double> %912, ptr %913, align 16, !tbaa !26
  %914 = load i64, ptr %885, align 16, !tbaa !31
  %915 = icmp slt i64 %900, %914
  %916 = getelementptr inbounds nuw <2 x double>, ptr %873, i64 %900
  %917 = load <2 x double>, ptr %916, align 16, !tbaa !26
  br i1 %915, label %918, label %921

918:                                              ; preds = %911
  %919 = fmul <2 x double> %867, %904
  %920 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %865, <2 x double> %902, <2 x double> %919)
  br label %934

921:                                              ; preds = %911
  %922 = fmul <2 x double> %845, %902
  %923 = fmul <2 x double> %922, splat (double 0x3FD5555555555555)
  %924 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %843, <2 x double> splat (double 5.000000e-01), <2 x double> %923)
  %925 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %902, <2 x double> %924, <2 x double> %841)
  %926 = fmul <2 x double> %902, %925
  %927 = fmul <2 x double> %845, %904
  %928 = fmul <2 x double> %927, splat (double 0x3FD5555555555555)
  %929 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %843, <2 x double> splat (double 5.000000e-01), <2 x double> %928)
  %930 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %904, <2 x double> %929, <2 x double> %841)
  %931 = fmul <2 x double> %904, %930
  %932 = fmul <2 x double> %863, %931
  %933 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %862, <2 x double> %926, <2 x double> %932)
  br label %934

934:                                              ; preds = %921, %918
  %935 = phi <2 x double> [ %933, %921 ], [ %920, %918 ]
  %936 = fmul <2 x double> %935, %917
  %937 = getelementptr inbounds nuw <2 x double>, ptr %881, i64 %900
  store <2 x double> %936, ptr %937, align 16, !tbaa !26
  %938 = add nuw nsw i64 %900, 1
  %939 = load i64, ptr %132, align 16, !tbaa !21
  %940 = icmp slt i64 %938, %939
  br i1 %940, label %899, label %886, !llvm.loop !62

941:                                              ; preds = %895, %941
  %942 = phi i64 [ 0, %895 ], [ %943, %941 ]
  %943 = add nuw nsw i64 %942, 1
  %944 = getelementptr inbounds nuw <2 x double>, ptr %890, i64 %943
  %945 = load <2 x double>, ptr %944, align 16, !tbaa !26
  %946 = getelementptr inbounds nuw <2 x double>, ptr %890, i64 %942
  %947 = load <2 x double>, ptr %946, align 16, !tbaa !26
  %948 = fsub <2 x double> %945, %947
  %949 = load ptr, ptr %896, align 8, !tbaa !52
  %950 = getelementptr inbounds nuw <2 x double>, ptr %949, i64 %942
  %951 = load <2 x double>, ptr %950, align 16, !tbaa !26
  %952 = fmul <2 x double> %948, %951
  %953 = getelementptr inbounds nuw <2 x double>, ptr %892, i64 %943
  %954 = load <2 x double>, ptr %953, align 16, !tbaa !26
  %955 = getelementptr inbounds nuw <2 x double>, ptr %892, i64 %942
  %956 = load <2 x double>, ptr %955, align 16, !tbaa !26
  %957 = fsub <2 x double> %954, %956
  %958 = load ptr, ptr %897, align 16, !tbaa !63
  %959 = getelementptr inbounds nuw <2 x double>, ptr %958, i64 %942
  %960 = load <2 x double>, ptr %959, align 16, !tbaa !26
  %961 = fmul <2 x double> %957, %960
  %962 = fmul <2 x double> %888, %961
  %963 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %887, <2 x double> %952, <2 x double> %962)
  %964 = load ptr, ptr %898, align 8, !tbaa !64
  %965 = getelementptr inbounds nuw <2 x double>, ptr %964, i64 %942
  store <2 x double> %963, ptr %965, align 16, !tbaa !26
  %966 = load i64, ptr %133, align 8, !tbaa !22
  %967 = icmp slt i64 %943, %966
  br i1 %967, label %941, label %968, !llvm.loop !65

968:                                              ; preds = %941, %886
  %969 = getelementptr inbounds nuw i8, ptr %791, i64 416
  %970 = load <2 x double>, ptr %969, align 16, !tbaa !26
  %971 = fcmp ogt <2 x double> %970, zeroinitializer
  %972 = bitcast <2 x i1> %971 to i2
  %973 = icmp eq i2 %972, 0
  br i1 %973, label %974, label %978

974:                                              ; preds = %968
  %975 = getelementptr inbounds nuw i8, ptr %791, i64 1872
  %976 = load <2 x double>, ptr %975, align 16, !tbaa !26
  %977 = select <2 x i1> %705, <2 x double> %976, <2 x double> zeroinitializer
  store <2 x double> %977, ptr %975, align 16, !tbaa !26
  br label %1087

978:                                              ; preds = %968
  %979 = load <2 x double>, ptr %851, align 16, !tbaa !26
  %980 = getelementptr inbounds nuw i8, ptr %791, i64 432
  %981 = load <2 x double>, ptr %980, align 16, !tbaa !26
  %982 = getelementptr inbounds nuw i8, ptr %791, i64 464
  %983 = load <2 x double>, ptr %982, align 16, !tbaa !26
  %984 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %985 = fneg <2 x double> %984
  %986 = fdiv <2 x double> %985, %981
  %987 = fcmp ogt <2 x double> %986, splat (double -7.000000e+02)
  %988 = select <2 x i1> %987, <2 x double> %986, <2 x double> splat (double -7.000000e+02)
  %989 = fcmp olt <2 x double> %988, splat (double 7.000000e+02)
  %990 = select <2 x i1> %989, <2 x double> %988, <2 x double> splat (double 7.000000e+02)
  %991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %990, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %992 = fadd <2 x double> %991, splat (double 0xC338000000000000)
  %993 = fneg <2 x double> %992
  %994 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %993, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %990)
  %995 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %993, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %994)
  %996 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %995, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %997 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %996, <2 x double> %995, <2 x double> splat (double 0x3E5AE64567F544E4))
  %998 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %997, <2 x double> %995, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %999 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %998, <2 x double> %995, <2 x double> splat (double 0x3EC71DE3A556C734))
  %1000 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %999, <2 x double> %995, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %1001 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1000, <2 x double> %995, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %1002 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> %995, <2 x double> splat (double 0x3F56C16C16C16C17))
  %1003 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1002, <2 x double> %995, <2 x double> splat (double 0x3F81111111111111))
  %1004 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1003, <2 x double> %995, <2 x double> splat (double 0x3FA5555555555555))
  %1005 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1004, <2 x double> %995, <2 x double> splat (double 0x3FC5555555555555))
  %1006 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1005, <2 x double> %995, <2 x double> splat (double 5.000000e-01))
  %1007 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1006, <2 x double> %995, <2 x double> splat (double 1.000000e+00))
  %1008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1007, <2 x double> %995, <2 x double> splat (double 1.000000e+00))
  %1009 = bitcast <2 x double> %991 to <2 x i64>
  %1010 = shl <2 x i64> %1009, splat (i64 52)
  %1011 = bitcast <2 x double> %1008 to <2 x i64>
  %1012 = add <2 x i64> %1010, %1011
  %1013 = bitcast <2 x i64> %1012 to <2 x double>
  %1014 = fsub <2 x double> splat (double 1.000000e+00), %1013
  %1015 = load <2 x double>, ptr %854, align 16, !tbaa !26
  %1016 = fsub <2 x double> %1015, %979
  %1017 = load ptr, ptr %878, align 8, !tbaa !59
  %1018 = load ptr, ptr %868, align 16, !tbaa !48
  %1019 = getelementptr inbounds nuw i8, ptr %791, i64 2192
  %1020 = load ptr, ptr %1019, align 16, !tbaa !49
  %1021 = load ptr, ptr %872, align 8, !tbaa !50
  %1022 = getelementptr inbounds nuw i8, ptr %791, i64 2184
  %1023 = load ptr, ptr %1022, align 8, !tbaa !66
  %1024 = getelementptr inbounds nuw i8, ptr %791, i64 2128
  %1025 = load i64, ptr %1024, align 16, !tbaa !31
  %1026 = load i64, ptr %132, align 16, !tbaa !21
  %1027 = icmp slt i64 %1025, %1026
  br i1 %1027, label %1028, label %1032

1028:                                             ; preds = %978
  %1029 = getelementptr inbounds nuw i8, ptr %791, i64 448
  %1030 = load <2 x double>, ptr %1029, align 16, !tbaa !26
  %1031 = fneg <2 x double> %1030
  br label %1044

1032:                                             ; preds = %1044, %978
  %1033 = phi <2 x double> [ zeroinitializer, %978 ], [ %1075, %1044 ]
  %1034 = phi <2 x double> [ zeroinitializer, %978 ], [ %1083, %1044 ]
  %1035 = getelementptr inbounds nuw i8, ptr %791, i64 976
  %1036 = load <2 x double>, ptr %1035, align 16, !tbaa !26
  %1037 = fsub <2 x double> %1036, %1015
  %1038 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1033, <2 x double> %1037, <2 x double> %1034)
  %1039 = getelementptr inbounds nuw i8, ptr %791, i64 1872
  %1040 = load <2 x double>, ptr %850, align 16, !tbaa !26
  %1041 = fmul <2 x double> %1040, %1038
  %1042 = load <2 x double>, ptr %1039, align 16, !tbaa !26
  %1043 = select <2 x i1> %705, <2 x double> %1042, <2 x double> %1041
  store <2 x double> %1043, ptr %1039, align 16, !tbaa !26
  br label %1087

1044:                                             ; preds = %1028, %1044
  %1045 = phi <2 x double> [ zeroinitializer, %1028 ], [ %1083, %1044 ]
  %1046 = phi i64 [ %1025, %1028 ], [ %1084, %1044 ]
  %1047 = getelementptr inbounds <2 x double>, ptr %1018, i64 %1046
  %1048 = load <2 x double>, ptr %1047, align 16, !tbaa !26
  %1049 = getelementptr inbounds <2 x double>, ptr %1017, i64 %1046
  %1050 = load <2 x double>, ptr %1049, align 16, !tbaa !26
  %1051 = fadd <2 x double> %1048, %1050
  %1052 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1051, <2 x double> splat (double 5.000000e-01), <2 x double> %1031)
  %1053 = fmul <2 x double> %983, %1052
  %1054 = fcmp ogt <2 x double> %1053, splat (double -5.000000e+00)
  %1055 = select <2 x i1> %1054, <2 x double> %1053, <2 x double> splat (double -5.000000e+00)
  %1056 = fcmp olt <2 x double> %1055, splat (double 5.000000e+00)
  %1057 = select <2 x i1> %1056, <2 x double> %1055, <2 x double> splat (double 5.000000e+00)
  %1058 = fmul <2 x double> %1057, %1057
  %1059 = fadd <2 x double> %1058, splat (double 3.780000e+02)
  %1060 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1058, <2 x double> %1059, <2 x double> splat (double 1.732500e+04))
  %1061 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1058, <2 x double> %1060, <2 x double> splat (double 1.351350e+05))
  %1062 = fmul <2 x double> %1057, %1061
  %1063 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1058, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1064 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1058, <2 x double> %1063, <2 x double> splat (double 6.237000e+04))
  %1065 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1058, <2 x double> %1064, <2 x double> splat (double 1.351350e+05))
  %1066 = fdiv <2 x double> %1062, %1065
  %1067 = fadd <2 x double> %1066, splat (double 1.000000e+00)
  %1068 = fmul <2 x double> %970, %1067
  %1069 = getelementptr inbounds <2 x double>, ptr %1020, i64 %1046
  %1070 = load <2 x double>, ptr %1069, align 16, !tbaa !26
  %1071 = fadd <2 x double> %1070, splat (double -1.000000e+00)
  %1072 = fadd <2 x double> %1071, %1068
  %1073 = fcmp ogt <2 x double> %1072, zeroinitializer
  %1074 = select <2 x i1> %1073, <2 x double> %1072, <2 x double> zeroinitializer
  %1075 = fmul <2 x double> %1014, %1074
  %1076 = fsub <2 x double> %1070, %1075
  %1077 = getelementptr inbounds <2 x double>, ptr %1023, i64 %1046
  %1078 = load <2 x double>, ptr %1077, align 16, !tbaa !26
  %1079 = select <2 x i1> %705, <2 x double> %1078, <2 x double> %1076
  store <2 x double> %1079, ptr %1077, align 16, !tbaa !26
  %1080 = getelementptr inbounds <2 x double>, ptr %1021, i64 %1046
  %1081 = load <2 x double>, ptr %1080, align 16, !tbaa !26
  %1082 = fmul <2 x double> %1016, %1081
  %1083 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1075, <2 x double> %1082, <2 x double> %1045)
  %1084 = add nsw i64 %1046, 1
  %1085 = load i64, ptr %132, align 16, !tbaa !21
  %1086 = icmp slt i64 %1084, %1085
  br i1 %1086, label %1044, label %1032, !llvm.loop !67

1087:                                             ; preds = %974, %1032
  %1088 = load <2 x double>, ptr %829, align 16, !tbaa !26
  %1089 = load <2 x double>, ptr %830, align 16, !tbaa !26
  %1090 = fcmp olt <2 x double> %1088, %1089
  %1091 = select <2 x i1> %1090, <2 x double> %1088, <2 x double> %1089
  %1092 = load <2 x double>, ptr %791, align 16, !tbaa !26
  %1093 = fmul <2 x double> %1092, splat (double 3.000000e-01)
  %1094 = fcmp ogt <2 x double> %1091, %1093
  %1095 = select <2 x i1> %1094, <2 x double> %1091, <2 x double> %1093
  %1096 = select <2 x i1> %705, <2 x double> %1088, <2 x double> %1095
  store <2 x double> %1096, ptr %829, align 16, !tbaa !26
  %1097 = getelementptr inbounds nuw i8, ptr %791, i64 768
  %1098 = load <2 x double>, ptr %1097, align 16, !tbaa !26, !noalias !68
  %1099 = getelementptr inbounds nuw i8, ptr %791, i64 1920
  %1100 = load <2 x double>, ptr %1099, align 16, !tbaa !26, !noalias !68
  %1101 = fmul <2 x double> %1098, %1100
  %1102 = fcmp ogt <2 x double> %1101, zeroinitializer
  %1103 = select <2 x i1> %1102, <2 x double> %1101, <2 x double> zeroinitializer
  %1104 = fcmp uge <2 x double> %1103, splat (double 1.000000e+00)
  %1105 = select <2 x i1> %1104, <2 x double> splat (double 1.000000e+00), <2 x double> %1103
  %1106 = getelementptr inbounds nuw i8, ptr %791, i64 2112
  %1107 = load <2 x i64>, ptr %1106, align 16, !tbaa !26, !noalias !68
  %1108 = load <2 x double>, ptr %181, align 16, !tbaa !26, !noalias !68
  %1109 = getelementptr inbounds nuw i8, ptr %791, i64 800
  %1110 = load <2 x double>, ptr %1109, align 16, !tbaa !26, !noalias !68
  %1111 = icmp eq <2 x i64> %1107, zeroinitializer
  %1112 = select <2 x i1> %1111, <2 x double> %1110, <2 x double> %1108
  %1113 = getelementptr inbounds nuw i8, ptr %791, i64 896
  %1114 = load <2 x double>, ptr %1113, align 16, !tbaa !26, !noalias !68
  %1115 = fsub <2 x double> splat (double 1.000000e+00), %1105
  %1116 = getelementptr inbounds nuw i8, ptr %791, i64 496
  %1117 = load <2 x double>, ptr %1116, align 16, !tbaa !26, !noalias !68
  %1118 = getelementptr inbounds nuw i8, ptr %791, i64 2080
  %1119 = load <2 x i64>, ptr %1118, align 16, !tbaa !26, !noalias !68
  %1120 = fsub <2 x double> %1092, %1096
  %1121 = getelementptr inbounds nuw i8, ptr %791, i64 1936
  %1122 = load <2 x double>, ptr %1121, align 16, !tbaa !26, !noalias !68
  %1123 = fmul <2 x double> %1120, %1122
  %1124 = icmp eq <2 x i64> %1119, zeroinitializer
  %1125 = select <2 x i1> %1124, <2 x double> zeroinitializer, <2 x double> %1123
  %1126 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1115, <2 x double> %1117, <2 x double> %1125)
  %1127 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1114, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1128 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1114, <2 x double> %1127, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1129 = fdiv <2 x double> splat (double 1.000000e+00), %1128
  %1130 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1112, <2 x double> %1126, <2 x double> splat (double 1.000000e+00))
  %1131 = fdiv <2 x double> splat (double 1.000000e+00), %1130
  %1132 = load <2 x double>, ptr %182, align 16, !tbaa !26, !noalias !68
  %1133 = load <2 x double>, ptr %179, align 16, !tbaa !26, !noalias !68
  %1134 = select <2 x i1> %1111, <2 x double> %1133, <2 x double> %1132
  %1135 = fsub <2 x double> %1134, %1114
  %1136 = fmul <2 x double> %1135, %1131
  %1137 = fmul <2 x double> %1112, %1136
  %1138 = load <2 x double>, ptr %812, align 16, !tbaa !26, !noalias !68
  %1139 = getelementptr inbounds nuw i8, ptr %791, i64 816
  %1140 = load <2 x double>, ptr %1139, align 16, !tbaa !26, !noalias !68
  %1141 = load <2 x double>, ptr %815, align 16, !tbaa !26, !noalias !68
  %1142 = getelementptr inbounds nuw i8, ptr %791, i64 1040
  %1143 = load <2 x double>, ptr %1142, align 16, !tbaa !26, !noalias !68
  %1144 = fmul <2 x double> %1141, %1143
  %1145 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1138, <2 x double> %1140, <2 x double> %1144)
  %1146 = load <2 x double>, ptr %818, align 16, !tbaa !26, !noalias !68
  %1147 = getelementptr inbounds nuw i8, ptr %791, i64 1264
  %1148 = load <2 x double>, ptr %1147, align 16, !tbaa !26, !noalias !68
  %1149 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1146, <2 x double> %1148, <2 x double> %1145)
  %1150 = getelementptr inbounds nuw i8, ptr %791, i64 1952
  %1151 = load <2 x double>, ptr %1150, align 16, !tbaa !26, !noalias !68
  %1152 = fmul <2 x double> %1122, %1151
  %1153 = fcmp ule <2 x double> %1105, zeroinitializer
  %1154 = or <2 x i1> %1104, %1153
  %1155 = fmul <2 x double> %1100, %1117
  %1156 = select <2 x i1> %1154, <2 x double> zeroinitializer, <2 x double> %1155
  %1157 = select <2 x i1> %1124, <2 x double> %1156, <2 x double> %1152
  %1158 = fmul <2 x double> %1112, %1137
  %1159 = fmul <2 x double> %1131, %1158
  %1160 = fmul <2 x double> %1129, %1159
  %1161 = fmul <2 x double> %1160, %1157
  %1162 = load <2 x double>, ptr %821, align 16, !tbaa !26, !noalias !68
  %1163 = fmul <2 x double> %1162, %1161
  %1164 = fadd <2 x double> %1163, splat (double 1.000000e+00)
  %1165 = fdiv <2 x double> splat (double 1.000000e+00), %1164
  %1166 = getelementptr inbounds nuw i8, ptr %791, i64 864
  %1167 = load <2 x double>, ptr %1166, align 16, !tbaa !26, !noalias !68
  %1168 = fsub <2 x double> %1137, %1167
  %1169 = load <2 x double>, ptr %833, align 16, !tbaa !26, !noalias !68
  %1170 = fsub <2 x double> %1149, %1169
  %1171 = fmul <2 x double> %1163, %1170
  %1172 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1168, <2 x double> %1129, <2 x double> %1171)
  %1173 = fmul <2 x double> %1172, %1165
  %1174 = getelementptr inbounds nuw i8, ptr %791, i64 1504
  %1175 = load <2 x double>, ptr %1174, align 16, !tbaa !26, !noalias !68
  %1176 = fcmp ule <2 x double> %1175, zeroinitializer
  %1177 = fcmp ule <2 x double> %1173, zeroinitializer
  %1178 = or <2 x i1> %1176, %1177
  %1179 = select <2 x i1> %1178, <2 x double> zeroinitializer, <2 x double> %1173
  %1180 = getelementptr inbounds nuw i8, ptr %791, i64 544
  %1181 = load <2 x double>, ptr %1180, align 16, !tbaa !26, !noalias !68
  %1182 = fcmp ogt <2 x double> %1181, zeroinitializer
  %1183 = getelementptr inbounds nuw i8, ptr %791, i64 256
  %1184 = load <2 x double>, ptr %1183, align 16, !tbaa !26, !noalias !68
  %1185 = bitcast <2 x i1> %1182 to i2
  %1186 = icmp eq i2 %1185, 0
  br i1 %1186, label %1199, label %1187

1187:                                             ; preds = %1087
  %1188 = getelementptr inbounds nuw i8, ptr %791, i64 912
  %1189 = load <2 x double>, ptr %1188, align 16, !tbaa !26, !noalias !68
  %1190 = fadd <2 x double> %1136, %1189
  %1191 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1190)
  %1192 = fcmp ogt <2 x double> %1181, splat (double 1.000000e-09)
  %1193 = select <2 x i1> %1192, <2 x double> %1181, <2 x double> splat (double 1.000000e-09)
  %1194 = fdiv <2 x double> %1191, %1193
  %1195 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1194)
  %1196 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1195)
  %1197 = select <2 x i1> %1182, <2 x double> %1196, <2 x double> splat (double 1.000000e+00)
  %1198 = fmul <2 x double> %1184, %1197
  br label %1199

1199:                                             ; preds = %1087, %1187
  %1200 = phi <2 x double> [ %1198, %1187 ], [ %1184, %1087 ]
  %1201 = getelementptr inbounds nuw i8, ptr %791, i64 1024
  %1202 = load <2 x double>, ptr %1201, align 16, !tbaa !26, !noalias !68
  %1203 = getelementptr inbounds nuw i8, ptr %791, i64 1248
  %1204 = load <2 x double>, ptr %1203, align 16, !tbaa !26, !noalias !68
  %1205 = fmul <2 x double> %1146, %1204
  %1206 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1141, <2 x double> %1202, <2 x double> %1205)
  %1207 = getelementptr inbounds nuw i8, ptr %791, i64 304
  %1208 = load <2 x double>, ptr %1207, align 16, !tbaa !26, !noalias !68
  %1209 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1208, <2 x double> %1138, <2 x double> splat (double 1.000000e+00))
  %1210 = fdiv <2 x double> splat (double 1.000000e+00), %1209
  %1211 = fmul <2 x double> %1131, %1136
  %1212 = fmul <2 x double> %1129, %1211
  %1213 = fmul <2 x double> %1212, %1165
  %1214 = select <2 x i1> %1178, <2 x double> zeroinitializer, <2 x double> %1213
  %1215 = getelementptr inbounds nuw i8, ptr %791, i64 272
  %1216 = load <2 x double>, ptr %1215, align 16, !tbaa !26, !noalias !68
  %1217 = fmul <2 x double> %1200, splat (double 2.500000e-01)
  %1218 = fmul <2 x double> %1126, %1217
  %1219 = fneg <2 x double> %1131
  %1220 = fmul <2 x double> %1218, %1219
  %1221 = select <2 x i1> %1182, <2 x double> %1220, <2 x double> splat (double -0.000000e+00)
  %1222 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1216, <2 x double> %1214, <2 x double> %1221)
  %1223 = fadd <2 x double> %1169, %1179
  %1224 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1216, <2 x double> %1223, <2 x double> %1200)
  %1225 = fneg <2 x double> %1208
  %1226 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1225, <2 x double> %1206, <2 x double> %1224)
  %1227 = fneg <2 x double> %1112
  %1228 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1210, <2 x double> %1226, <2 x double> %1227)
  %1229 = fmul <2 x double> %1210, %1222
  %1230 = fcmp olt <2 x double> %1229, splat (double 8.000000e-01)
  %1231 = select <2 x i1> %1230, <2 x double> %1229, <2 x double> splat (double 8.000000e-01)
  %1232 = fsub <2 x double> splat (double 1.000000e+00), %1231
  %1233 = fdiv <2 x double> %1228, %1232
  %1234 = fadd <2 x double> %1112, %1233
  %1235 = getelementptr inbounds nuw i8, ptr %791, i64 288
  %1236 = load <2 x double>, ptr %1235, align 16, !tbaa !26, !noalias !68
  %1237 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1225, <2 x double> %1206, <2 x double> %1236)
  %1238 = fmul <2 x double> %1210, %1237
  %1239 = fcmp olt <2 x double> %1234, %1238
  %1240 = select <2 x i1> %1239, <2 x double> %1234, <2 x double> %1238
  %1241 = select <2 x i1> %1111, <2 x double> %1240, <2 x double> %1108
  %1242 = fsub <2 x double> %1241, %1112
  %1243 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1214, <2 x double> %1242, <2 x double> %1179)
  %1244 = fcmp ogt <2 x double> %1243, zeroinitializer
  %1245 = select <2 x i1> %1244, <2 x double> %1243, <2 x double> zeroinitializer
  %1246 = select <2 x i1> %705, <2 x double> %1110, <2 x double> %1241
  store <2 x double> %1246, ptr %1109, align 16, !tbaa !26
  %1247 = select <2 x i1> %705, <2 x double> %1175, <2 x double> %1245
  store <2 x double> %1247, ptr %1174, align 16, !tbaa !26
  %1248 = fadd <2 x double> %1169, %1247
  %1249 = fneg <2 x double> %1141
  %1250 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1249, <2 x double> %1143, <2 x double> %1248)
  %1251 = fneg <2 x double> %1146
  %1252 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1251, <2 x double> %1148, <2 x double> %1250)
  %1253 = fmul <2 x double> %1162, %1252
  %1254 = load <2 x double>, ptr %853, align 16, !tbaa !26, !noalias !71
  %1255 = fsub <2 x double> %1254, %1253
  %1256 = getelementptr inbounds nuw i8, ptr %791, i64 1008
  %1257 = load <2 x double>, ptr %1256, align 16, !tbaa !26, !noalias !71
  %1258 = getelementptr inbounds nuw i8, ptr %791, i64 1872
  %1259 = load <2 x double>, ptr %1258, align 16, !tbaa !26, !noalias !71
  %1260 = fsub <2 x double> %1257, %1259
  %1261 = getelementptr inbounds nuw i8, ptr %791, i64 976
  %1262 = load <2 x double>, ptr %1261, align 16, !tbaa !26, !noalias !71
  %1263 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1119)
  %1264 = icmp eq i64 %1263, 0
  br i1 %1264, label %1444, label %1265

1265:                                             ; preds = %1199
  %1266 = fcmp ogt <2 x double> %1260, %1255
  %1267 = getelementptr inbounds nuw i8, ptr %791, i64 1904
  %1268 = load <2 x double>, ptr %1267, align 16, !tbaa !26, !noalias !71
  %1269 = fcmp oeq <2 x double> %1268, zeroinitializer
  %1270 = select <2 x i1> %1269, <2 x i1> %1266, <2 x i1> zeroinitializer
  %1271 = select <2 x i1> %1270, <2 x i64> %1119, <2 x i64> zeroinitializer
  %1272 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1271)
  %1273 = icmp eq i64 %1272, 0
  br i1 %1273, label %1342, label %1274

1274:                                             ; preds = %1265
  %1275 = fsub <2 x double> %1260, %1255
  %1276 = fmul <2 x double> %1151, %1275
  %1277 = getelementptr inbounds nuw i8, ptr %791, i64 2184
  %1278 = load ptr, ptr %1277, align 8, !tbaa !66, !noalias !71
  %1279 = load i64, ptr %132, align 16, !tbaa !21, !noalias !71
  %1280 = add nsw i64 %1279, -1
  %1281 = getelementptr inbounds <2 x double>, ptr %1278, i64 %1280
  %1282 = load <2 x double>, ptr %1281, align 16, !tbaa !26, !noalias !71
  %1283 = icmp sgt i64 %1279, 1
  br i1 %1283, label %1284, label %1334

1284:                                             ; preds = %1274
  %1285 = getelementptr inbounds nuw i8, ptr %791, i64 2128
  %1286 = load i64, ptr %1285, align 16, !tbaa !31, !noalias !71
  %1287 = getelementptr inbounds nuw i8, ptr %791, i64 2240
  br label %1288

1288:                                             ; preds = %1284, %1331
  %1289 = phi <2 x double> [ %1262, %1284 ], [ %1326, %1331 ]
  %1290 = phi i64 [ %1280, %1284 ], [ %1332, %1331 ]
  %1291 = phi <2 x double> [ %1282, %1284 ], [ %1314, %1331 ]
  %1292 = phi <2 x i64> [ %1271, %1284 ], [ %1318, %1331 ]
  %1293 = phi <2 x double> [ %1276, %1284 ], [ %1325, %1331 ]
  %1294 = icmp slt i64 %1290, %1286
  br i1 %1294, label %1295, label %1301

1295:                                             ; preds = %1288
  %1296 = load ptr, ptr %1287, align 16, !tbaa !74, !noalias !71
  %1297 = getelementptr inbounds nuw <2 x double>, ptr %1296, i64 %1290
  %1298 = load <2 x double>, ptr %1297, align 16, !tbaa !26, !noalias !71
  %1299 = load <2 x double>, ptr %851, align 16, !tbaa !26, !noalias !71
  %1300 = fmul <2 x double> %1298, %1299
  br label %1309

1301:                                             ; preds = %1288
  %1302 = load <2 x double>, ptr %854, align 16, !tbaa !26, !noalias !71
  %1303 = load <2 x double>, ptr %851, align 16, !tbaa !26, !noalias !71
  %1304 = load ptr, ptr %1287, align 16, !tbaa !74, !noalias !71
  %1305 = getelementptr inbounds nuw <2 x double>, ptr %1304, i64 %1290
  %1306 = load <2 x double>, ptr %1305, align 16, !tbaa !26, !noalias !71
  %1307 = fsub <2 x double> %1302, %1303
  %1308 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1306, <2 x double> %1307, <2 x double> %1303)
  br label %1309

1309:                                             ; preds = %1295, %1301
  %1310 = phi <2 x double> [ %1300, %1295 ], [ %1308, %1301 ]
  %1311 = getelementptr inbounds nuw <2 x double>, ptr %1278, i64 %1290
  %1312 = load <2 x double>, ptr %1311, align 16, !tbaa !26, !noalias !71
  %1313 = icmp eq <2 x i64> %1292, zeroinitializer
  %1314 = select <2 x i1> %1313, <2 x double> %1291, <2 x double> %1312
  %1315 = fsub <2 x double> %1289, %1310
  %1316 = fmul <2 x double> %1315, %1314
  %1317 = fcmp olt <2 x double> %1316, %1293
  %1318 = select <2 x i1> %1317, <2 x i64> %1292, <2 x i64> zeroinitializer
  %1319 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1318)
  %1320 = icmp eq i64 %1319, 0
  br i1 %1320, label %1334, label %1321

1321:                                             ; preds = %1309
  %1322 = fneg <2 x double> %1314
  %1323 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1322, <2 x double> %1315, <2 x double> %1293)
  %1324 = icmp eq <2 x i64> %1318, zeroinitializer
  %1325 = select <2 x i1> %1324, <2 x double> %1293, <2 x double> %1323
  %1326 = select <2 x i1> %1324, <2 x double> %1289, <2 x double> %1310
  %1327 = icmp eq i64 %1290, 1
  br i1 %1327, label %1328, label %1331

1328:                                             ; preds = %1321
  %1329 = load <2 x double>, ptr %1278, align 16, !tbaa !26, !noalias !71
  %1330 = select <2 x i1> %1324, <2 x double> %1314, <2 x double> %1329
  br label %1334

1331:                                             ; preds = %1321
  %1332 = add nsw i64 %1290, -1
  %1333 = icmp sgt i64 %1290, 1
  br i1 %1333, label %1288, label %1334, !llvm.loop !75

1334:                                             ; preds = %1331, %1309, %1328, %1274
  %1335 = phi <2 x double> [ %1276, %1274 ], [ %1325, %1328 ], [ %1293, %1309 ], [ %1325, %1331 ]
  %1336 = phi <2 x double> [ %1262, %1274 ], [ %1326, %1328 ], [ %1289, %1309 ], [ %1326, %1331 ]
  %1337 = phi <2 x double> [ %1282, %1274 ], [ %1330, %1328 ], [ %1314, %1309 ], [ %1314, %1331 ]
  %1338 = fdiv <2 x double> %1335, %1337
  %1339 = fsub <2 x double> %1336, %1338
  %1340 = icmp eq <2 x i64> %1271, zeroinitializer
  %1341 = select <2 x i1> %1340, <2 x double> %1262, <2 x double> %1339
  br label %1342

1342:                                             ; preds = %1334, %1265
  %1343 = phi <2 x double> [ %1341, %1334 ], [ %1262, %1265 ]
  %1344 = getelementptr inbounds nuw i8, ptr %791, i64 656
  %1345 = load <2 x double>, ptr %1344, align 16, !tbaa !26, !noalias !71
  %1346 = getelementptr inbounds nuw i8, ptr %791, i64 672
  %1347 = load <2 x double>, ptr %1346, align 16, !tbaa !26, !noalias !71
  %1348 = getelementptr inbounds nuw i8, ptr %791, i64 688
  %1349 = load <2 x double>, ptr %1348, align 16, !tbaa !26, !noalias !71
  %1350 = getelementptr inbounds nuw i8, ptr %791, i64 640
  %1351 = load <2 x double>, ptr %1350, align 16, !tbaa !26, !noalias !71
  %1352 = fmul <2 x double> %1092, splat (double 5.000000e-04)
  %1353 = fmul <2 x double> %1096, splat (double 3.000000e+00)
  %1354 = fmul <2 x double> %1353, %1349
  %1355 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1347, <2 x double> splat (double 2.000000e+00), <2 x double> %1354)
  %1356 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1096, <2 x double> %1355, <2 x double> %1345)
  %1357 = fdiv <2 x double> splat (double 1.000000e+00), %1356
  %1358 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1096, <2 x double> %1349, <2 x double> %1347)
  %1359 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1096, <2 x double> %1358, <2 x double> %1345)
  %1360 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1096, <2 x double> %1359, <2 x double> %1351)
  %1361 = fsub <2 x double> %1360, %1343
  %1362 = fmul <2 x double> %1361, %1357
  %1363 = fmul <2 x double> %1362, %1362
  %1364 = fmul <2 x double> %1357, %1363
  %1365 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1353, <2 x double> %1349, <2 x double> %1347)
  %1366 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1364, <2 x double> %1365, <2 x double> %1362)
  %1367 = fsub <2 x double> %1096, %1366
  %1368 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1366)
  %1369 = fcmp oge <2 x double> %1368, %1352
  %1370 = bitcast <2 x i1> %1369 to i2
  %1371 = icmp eq i2 %1370, 0
  br i1 %1371, label %1433, label %1372, !llvm.loop !76

1372:                                             ; preds = %1342
  %1373 = fmul <2 x double> %1367, splat (double 3.000000e+00)
  %1374 = fmul <2 x double> %1373, %1349
  %1375 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1347, <2 x double> splat (double 2.000000e+00), <2 x double> %1374)
  %1376 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1367, <2 x double> %1375, <2 x double> %1345)
  %1377 = fdiv <2 x double> splat (double 1.000000e+00), %1376
  %1378 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1367, <2 x double> %1349, <2 x double> %1347)
  %1379 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1367, <2 x double> %1378, <2 x double> %1345)
  %1380 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1367, <2 x double> %1379, <2 x double> %1351)
  %1381 = fsub <2 x double> %1380, %1343
  %1382 = fmul <2 x double> %1381, %1377
  %1383 = fmul <2 x double> %1382, %1382
  %1384 = fmul <2 x double> %1377, %1383
  %1385 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1373, <2 x double> %1349, <2 x double> %1347)
  %1386 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1384, <2 x double> %1385, <2 x double> %1382)
  %1387 = fsub <2 x double> %1367, %1386
  %1388 = select <2 x i1> %1369, <2 x double> %1387, <2 x double> %1367
  %1389 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1386)
  %1390 = fcmp oge <2 x double> %1389, %1352
  %1391 = and <2 x i1> %1390, %1369
  %1392 = bitcast <2 x i1> %1391 to i2
  %1393 = icmp eq i2 %1392, 0
  br i1 %1393, label %1433, label %1394, !llvm.loop !76

1394:                                             ; preds = %1372
  %1395 = fmul <2 x double> %1388, splat (double 3.000000e+00)
  %1396 = fmul <2 x double> %1395, %1349
  %1397 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1347, <2 x double> splat (double 2.000000e+00), <2 x double> %1396)
  %1398 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1388, <2 x double> %1397, <2 x double> %1345)
  %1399 = fdiv <2 x double> splat (double 1.000000e+00), %1398
  %1400 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1388, <2 x double> %1349, <2 x double> %1347)
  %1401 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1388, <2 x double> %1400, <2 x double> %1345)
  %1402 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1388, <2 x double> %1401, <2 x double> %1351)
  %1403 = fsub <2 x double> %1402, %1343
  %1404 = fmul <2 x double> %1403, %1399
  %1405 = fmul <2 x double> %1404, %1404
  %1406 = fmul <2 x double> %1399, %1405
  %1407 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1395, <2 x double> %1349, <2 x double> %1347)
  %1408 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1406, <2 x double> %1407, <2 x double> %1404)
  %1409 = fsub <2 x double> %1388, %1408
  %1410 = select <2 x i1> %1391, <2 x double> %1409, <2 x double> %1388
  %1411 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1408)
  %1412 = fcmp oge <2 x double> %1411, %1352
  %1413 = and <2 x i1> %1412, %1391
  %1414 = bitcast <2 x i1> %1413 to i2
  %1415 = icmp eq i2 %1414, 0
  br i1 %1415, label %1433, label %1416, !llvm.loop !76

1416:                                             ; preds = %1394
  %1417 = fmul <2 x double> %1410, splat (double 3.000000e+00)
  %1418 = fmul <2 x double> %1417, %1349
  %1419 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1347, <2 x double> splat (double 2.000000e+00), <2 x double> %1418)
  %1420 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1410, <2 x double> %1419, <2 x double> %1345)
  %1421 = fdiv <2 x double> splat (double 1.000000e+00), %1420
  %1422 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1410, <2 x double> %1349, <2 x double> %1347)
  %1423 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1410, <2 x double> %1422, <2 x double> %1345)
  %1424 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1410, <2 x double> %1423, <2 x double> %1351)
  %1425 = fsub <2 x double> %1424, %1343
  %1426 = fmul <2 x double> %1425, %1421
  %1427 = fmul <2 x double> %1426, %1426
  %1428 = fmul <2 x double> %1421, %1427
  %1429 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1417, <2 x double> %1349, <2 x double> %1347)
  %1430 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1428, <2 x double> %1429, <2 x double> %1426)
  %1431 = fsub <2 x double> %1410, %1430
  %1432 = select <2 x i1> %1413, <2 x double> %1431, <2 x double> %1410
  br label %1433

1433:                                             ; preds = %1416, %1394, %1372, %1342
  %1434 = phi <2 x double> [ %1367, %1342 ], [ %1388, %1372 ], [ %1410, %1394 ], [ %1432, %1416 ]
  %1435 = fmul <2 x double> %1092, splat (double 2.800000e-01)
  %1436 = fcmp ogt <2 x double> %1434, %1435
  %1437 = select <2 x i1> %1436, <2 x double> %1434, <2 x double> %1435
  %1438 = fcmp olt <2 x double> %1437, %1092
  %1439 = select <2 x i1> %1438, <2 x double> %1437, <2 x double> %1092
  %1440 = select <2 x i1> %1124, <2 x double> %1096, <2 x double> %1439
  %1441 = fcmp olt <2 x double> %1260, %1255
  %1442 = select <2 x i1> %1124, <2 x i1> splat (i1 true), <2 x i1> %1441
  %1443 = select <2 x i1> %1442, <2 x double> %1260, <2 x double> %1255
  br label %1444

1444:                                             ; preds = %1199, %1433
  %1445 = phi <2 x double> [ %1443, %1433 ], [ %1260, %1199 ]
  %1446 = phi <2 x double> [ %1440, %1433 ], [ %1096, %1199 ]
  %1447 = phi <2 x double> [ %1343, %1433 ], [ %1262, %1199 ]
  %1448 = fsub <2 x double> %1255, %1445
  %1449 = select <2 x i1> %705, <2 x double> %1140, <2 x double> %1253
  store <2 x double> %1449, ptr %1139, align 16, !tbaa !26
  %1450 = select <2 x i1> %705, <2 x double> %1098, <2 x double> %1448
  store <2 x double> %1450, ptr %1097, align 16, !tbaa !26
  %1451 = getelementptr inbounds nuw i8, ptr %791, i64 784
  %1452 = load <2 x double>, ptr %1451, align 16, !tbaa !26
  %1453 = select <2 x i1> %705, <2 x double> %1452, <2 x double> %1445
  store <2 x double> %1453, ptr %1451, align 16, !tbaa !26
  %1454 = getelementptr inbounds nuw i8, ptr %791, i64 752
  %1455 = and <2 x i64> %1119, %542
  %1456 = load <2 x double>, ptr %1454, align 16, !tbaa !26
  %1457 = icmp eq <2 x i64> %1455, zeroinitializer
  %1458 = select <2 x i1> %1457, <2 x double> %1456, <2 x double> %1447
  store <2 x double> %1458, ptr %1454, align 16, !tbaa !26
  %1459 = select <2 x i1> %1457, <2 x double> %1096, <2 x double> %1446
  store <2 x double> %1459, ptr %829, align 16, !tbaa !26
  %1460 = add nuw nsw i64 %789, 1
  %1461 = load i64, ptr %170, align 8, !tbaa !20
  %1462 = icmp slt i64 %1460, %1461
  br i1 %1462, label %788, label %1487, !llvm.loop !77

1463:                                             ; preds = %1475, %788
  %1464 = phi i64 [ 0, %788 ], [ %1486, %1475 ]
  %1465 = getelementptr inbounds nuw [14 x <2 x double>], ptr %829, i64 0, i64 %1464
  %1466 = getelementptr inbounds nuw [14 x <2 x double>], ptr %830, i64 0, i64 %1464
  %1467 = load <2 x double>, ptr %1466, align 16, !tbaa !26
  %1468 = getelementptr inbounds nuw [14 x <2 x double>], ptr %831, i64 0, i64 %1464
  %1469 = load <2 x double>, ptr %1468, align 16, !tbaa !26
  %1470 = fsub <2 x double> %1467, %1469
  %1471 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %828, <2 x double> %1470, <2 x double> %1467)
  %1472 = load <2 x double>, ptr %1465, align 16, !tbaa !26
  %1473 = select <2 x i1> %705, <2 x double> %1472, <2 x double> %1471
  store <2 x double> %1473, ptr %1465, align 16, !tbaa !26
  %1474 = icmp eq i64 %1464, 12
  br i1 %1474, label %832, label %1475, !llvm.loop !78

1475:                                             ; preds = %1463
  %1476 = or disjoint i64 %1464, 1
  %1477 = getelementptr inbounds nuw [14 x <2 x double>], ptr %829, i64 0, i64 %1476
  %1478 = getelementptr inbounds nuw [14 x <2 x double>], ptr %830, i64 0, i64 %1476
  %1479 = load <2 x double>, ptr %1478, align 16, !tbaa !26
  %1480 = getelementptr inbounds nuw [14 x <2 x double>], ptr %831, i64 0, i64 %1476
  %1481 = load <2 x double>, ptr %1480, align 16, !tbaa !26
  %1482 = fsub <2 x double> %1479, %1481
  %1483 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %828, <2 x double> %1482, <2 x double> %1479)
  %1484 = load <2 x double>, ptr %1477, align 16, !tbaa !26
  %1485 = select <2 x i1> %705, <2 x double> %1484, <2 x double> %1483
  store <2 x double> %1485, ptr %1477, align 16, !tbaa !26
  %1486 = add nuw nsw i64 %1464, 2
  br label %1463

1487:                                             ; preds = %1444, %679
  %1488 = phi i64 [ %784, %679 ], [ %1461, %1444 ]
  %1489 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %1490 = fcmp ogt <2 x double> %1489, zeroinitializer
  %1491 = select <2 x i1> %1490, <2 x i64> %542, <2 x i64> zeroinitializer
  %1492 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1491)
  %1493 = icmp eq i64 %1492, 0
  br i1 %1493, label %1500, label %1494

1494:                                             ; preds = %1487
  %1495 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0, <2 x i64> noundef %1491) #7
  %1496 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %1497 = icmp eq <2 x i64> %1491, zeroinitializer
  %1498 = select <2 x i1> %1497, <2 x double> %1496, <2 x double> %1495
  store <2 x double> %1498, ptr %179, align 16, !tbaa !26
  %1499 = load i64, ptr %170, align 8, !tbaa !20
  br label %1500

1500:                                             ; preds = %1487, %1494, %540
  %1501 = phi i64 [ %1488, %1487 ], [ %1499, %1494 ], [ %545, %540 ]
  %1502 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %1503 = icmp eq <2 x i64> %542, zeroinitializer
  %1504 = select <2 x i1> %1503, <2 x double> %1502, <2 x double> zeroinitializer
  store <2 x double> %1504, ptr %183, align 16, !tbaa !26
  %1505 = icmp sgt i64 %1501, 0
  br i1 %1505, label %1508, label %1506

1506:                                             ; preds = %1500
  %1507 = load <2 x double>, ptr %184, align 16, !tbaa !26
  br label %2341

1508:                                             ; preds = %1500
  %1509 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %1510 = xor <2 x i64> %542, splat (i64 -1)
  %1511 = and <2 x i64> %1509, %1510
  %1512 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1511)
  %1513 = icmp eq i64 %1512, 0
  %1514 = icmp eq <2 x i64> %1511, zeroinitializer
  br label %1518

1515:                                             ; preds = %2335
  %1516 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %1517 = icmp sgt i64 %2339, 0
  br i1 %1517, label %2346, label %2341

1518:                                             ; preds = %1508, %2335
  %1519 = phi i64 [ 0, %1508 ], [ %2338, %2335 ]
  %1520 = load ptr, ptr %143, align 8, !tbaa !28
  %1521 = getelementptr inbounds nuw %struct.Piece, ptr %1520, i64 %1519
  br i1 %1513, label %1522, label %1549

1522:                                             ; preds = %1518
  %1523 = getelementptr inbounds nuw i8, ptr %1521, i64 2112
  %1524 = load <2 x i64>, ptr %1523, align 16, !tbaa !26
  %1525 = getelementptr inbounds nuw i8, ptr %1521, i64 768
  %1526 = load <2 x double>, ptr %1525, align 16, !tbaa !26
  %1527 = getelementptr inbounds nuw i8, ptr %1521, i64 1920
  %1528 = load <2 x double>, ptr %1527, align 16, !tbaa !26
  %1529 = getelementptr inbounds nuw i8, ptr %1521, i64 1424
  %1530 = load <2 x double>, ptr %1529, align 16, !tbaa !26
  %1531 = getelementptr inbounds nuw i8, ptr %1521, i64 1440
  %1532 = load <2 x double>, ptr %1531, align 16, !tbaa !26
  %1533 = getelementptr inbounds nuw i8, ptr %1521, i64 2080
  %1534 = load <2 x i64>, ptr %1533, align 16, !tbaa !26
  %1535 = getelementptr inbounds nuw i8, ptr %1521, i64 496
  %1536 = load <2 x double>, ptr %1535, align 16, !tbaa !26
  %1537 = load <2 x double>, ptr %1521, align 16, !tbaa !26
  %1538 = getelementptr inbounds nuw i8, ptr %1521, i64 736
  %1539 = load <2 x double>, ptr %1538, align 16, !tbaa !26
  %1540 = getelementptr inbounds nuw i8, ptr %1521, i64 1936
  %1541 = load <2 x double>, ptr %1540, align 16, !tbaa !26
  %1542 = getelementptr inbounds nuw i8, ptr %1521, i64 1408
  %1543 = load <2 x double>, ptr %1542, align 16, !tbaa !26
  %1544 = getelementptr inbounds nuw i8, ptr %1521, i64 1504
  %1545 = load <2 x double>, ptr %1544, align 16, !tbaa !26
  %1546 = fmul <2 x double> %1526, %1528
  %1547 = fsub <2 x double> %1537, %1539
  %1548 = fmul <2 x double> %1547, %1541
  br label %1704

1549:                                             ; preds = %1518
  %1550 = getelementptr inbounds nuw i8, ptr %1521, i64 800
  %1551 = getelementptr inbounds nuw i8, ptr %1521, i64 768
  %1552 = load <2 x double>, ptr %1551, align 16, !tbaa !26, !noalias !79
  %1553 = getelementptr inbounds nuw i8, ptr %1521, i64 1920
  %1554 = load <2 x double>, ptr %1553, align 16, !tbaa !26, !noalias !79
  %1555 = fmul <2 x double> %1552, %1554
  %1556 = fcmp ogt <2 x double> %1555, zeroinitializer
  %1557 = select <2 x i1> %1556, <2 x double> %1555, <2 x double> zeroinitializer
  %1558 = fcmp uge <2 x double> %1557, splat (double 1.000000e+00)
  %1559 = select <2 x i1> %1558, <2 x double> splat (double 1.000000e+00), <2 x double> %1557
  %1560 = getelementptr inbounds nuw i8, ptr %1521, i64 2112
  %1561 = load <2 x i64>, ptr %1560, align 16, !tbaa !26, !noalias !79
  %1562 = load <2 x double>, ptr %181, align 16, !tbaa !26, !noalias !79
  %1563 = load <2 x double>, ptr %1550, align 16, !tbaa !26, !noalias !79
  %1564 = icmp eq <2 x i64> %1561, zeroinitializer
  %1565 = select <2 x i1> %1564, <2 x double> %1563, <2 x double> %1562
  %1566 = getelementptr inbounds nuw i8, ptr %1521, i64 896
  %1567 = load <2 x double>, ptr %1566, align 16, !tbaa !26, !noalias !79
  %1568 = fsub <2 x double> splat (double 1.000000e+00), %1559
  %1569 = getelementptr inbounds nuw i8, ptr %1521, i64 496
  %1570 = load <2 x double>, ptr %1569, align 16, !tbaa !26, !noalias !79
  %1571 = getelementptr inbounds nuw i8, ptr %1521, i64 2080
  %1572 = load <2 x i64>, ptr %1571, align 16, !tbaa !26, !noalias !79
  %1573 = load <2 x double>, ptr %1521, align 16, !tbaa !26, !noalias !79
  %1574 = getelementptr inbounds nuw i8, ptr %1521, i64 736
  %1575 = load <2 x double>, ptr %1574, align 16, !tbaa !26, !noalias !79
  %1576 = fsub <2 x double> %1573, %1575
  %1577 = getelementptr inbounds nuw i8, ptr %1521, i64 1936
  %1578 = load <2 x double>, ptr %1577, align 16, !tbaa !26, !noalias !79
  %1579 = fmul <2 x double> %1576, %1578
  %1580 = icmp eq <2 x i64> %1572, zeroinitializer
  %1581 = select <2 x i1> %1580, <2 x double> zeroinitializer, <2 x double> %1579
  %1582 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1568, <2 x double> %1570, <2 x double> %1581)
  %1583 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1567, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1584 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1567, <2 x double> %1583, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1585 = fdiv <2 x double> splat (double 1.000000e+00), %1584
  %1586 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1565, <2 x double> %1582, <2 x double> splat (double 1.000000e+00))
  %1587 = fdiv <2 x double> splat (double 1.000000e+00), %1586
  %1588 = load <2 x double>, ptr %182, align 16, !tbaa !26, !noalias !79
  %1589 = load <2 x double>, ptr %179, align 16, !tbaa !26, !noalias !79
  %1590 = select <2 x i1> %1564, <2 x double> %1589, <2 x double> %1588
  %1591 = fsub <2 x double> %1590, %1567
  %1592 = fmul <2 x double> %1591, %1587
  %1593 = fmul <2 x double> %1565, %1592
  %1594 = getelementptr inbounds nuw i8, ptr %1521, i64 1408
  %1595 = load <2 x double>, ptr %1594, align 16, !tbaa !26, !noalias !79
  %1596 = getelementptr inbounds nuw i8, ptr %1521, i64 816
  %1597 = load <2 x double>, ptr %1596, align 16, !tbaa !26, !noalias !79
  %1598 = getelementptr inbounds nuw i8, ptr %1521, i64 1424
  %1599 = load <2 x double>, ptr %1598, align 16, !tbaa !26, !noalias !79
  %1600 = getelementptr inbounds nuw i8, ptr %1521, i64 1040
  %1601 = load <2 x double>, ptr %1600, align 16, !tbaa !26, !noalias !79
  %1602 = fmul <2 x double> %1599, %1601
  %1603 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1595, <2 x double> %1597, <2 x double> %1602)
  %1604 = getelementptr inbounds nuw i8, ptr %1521, i64 1440
  %1605 = load <2 x double>, ptr %1604, align 16, !tbaa !26, !noalias !79
  %1606 = getelementptr inbounds nuw i8, ptr %1521, i64 1264
  %1607 = load <2 x double>, ptr %1606, align 16, !tbaa !26, !noalias !79
  %1608 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1605, <2 x double> %1607, <2 x double> %1603)
  %1609 = getelementptr inbounds nuw i8, ptr %1521, i64 1952
  %1610 = load <2 x double>, ptr %1609, align 16, !tbaa !26, !noalias !79
  %1611 = fmul <2 x double> %1578, %1610
  %1612 = fcmp ule <2 x double> %1559, zeroinitializer
  %1613 = or <2 x i1> %1558, %1612
  %1614 = fmul <2 x double> %1554, %1570
  %1615 = select <2 x i1> %1613, <2 x double> zeroinitializer, <2 x double> %1614
  %1616 = select <2 x i1> %1580, <2 x double> %1615, <2 x double> %1611
  %1617 = fmul <2 x double> %1565, %1593
  %1618 = fmul <2 x double> %1587, %1617
  %1619 = fmul <2 x double> %1585, %1618
  %1620 = fmul <2 x double> %1619, %1616
  %1621 = getelementptr inbounds nuw i8, ptr %1521, i64 1456
  %1622 = load <2 x double>, ptr %1621, align 16, !tbaa !26, !noalias !79
  %1623 = fmul <2 x double> %1622, %1620
  %1624 = fadd <2 x double> %1623, splat (double 1.000000e+00)
  %1625 = fdiv <2 x double> splat (double 1.000000e+00), %1624
  %1626 = getelementptr inbounds nuw i8, ptr %1521, i64 864
  %1627 = load <2 x double>, ptr %1626, align 16, !tbaa !26, !noalias !79
  %1628 = fsub <2 x double> %1593, %1627
  %1629 = getelementptr inbounds nuw i8, ptr %1521, i64 1520
  %1630 = load <2 x double>, ptr %1629, align 16, !tbaa !26, !noalias !79
  %1631 = fsub <2 x double> %1608, %1630
  %1632 = fmul <2 x double> %1623, %1631
  %1633 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1628, <2 x double> %1585, <2 x double> %1632)
  %1634 = fmul <2 x double> %1633, %1625
  %1635 = getelementptr inbounds nuw i8, ptr %1521, i64 1504
  %1636 = load <2 x double>, ptr %1635, align 16, !tbaa !26, !noalias !79
  %1637 = fcmp ule <2 x double> %1636, zeroinitializer
  %1638 = fcmp ule <2 x double> %1634, zeroinitializer
  %1639 = or <2 x i1> %1637, %1638
  %1640 = select <2 x i1> %1639, <2 x double> zeroinitializer, <2 x double> %1634
  %1641 = getelementptr inbounds nuw i8, ptr %1521, i64 544
  %1642 = load <2 x double>, ptr %1641, align 16, !tbaa !26, !noalias !79
  %1643 = fcmp ogt <2 x double> %1642, zeroinitializer
  %1644 = getelementptr inbounds nuw i8, ptr %1521, i64 256
  %1645 = load <2 x double>, ptr %1644, align 16, !tbaa !26, !noalias !79
  %1646 = bitcast <2 x i1> %1643 to i2
  %1647 = icmp eq i2 %1646, 0
  br i1 %1647, label %1660, label %1648

1648:                                             ; preds = %1549
  %1649 = getelementptr inbounds nuw i8, ptr %1521, i64 912
  %1650 = load <2 x double>, ptr %1649, align 16, !tbaa !26, !noalias !79
  %1651 = fadd <2 x double> %1592, %1650
  %1652 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1651)
  %1653 = fcmp ogt <2 x double> %1642, splat (double 1.000000e-09)
  %1654 = select <2 x i1> %1653, <2 x double> %1642, <2 x double> splat (double 1.000000e-09)
  %1655 = fdiv <2 x double> %1652, %1654
  %1656 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1655)
  %1657 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1656)
  %1658 = select <2 x i1> %1643, <2 x double> %1657, <2 x double> splat (double 1.000000e+00)
  %1659 = fmul <2 x double> %1645, %1658
  br label %1660

1660:                                             ; preds = %1648, %1549
  %1661 = phi <2 x double> [ %1659, %1648 ], [ %1645, %1549 ]
  %1662 = getelementptr inbounds nuw i8, ptr %1521, i64 1024
  %1663 = load <2 x double>, ptr %1662, align 16, !tbaa !26, !noalias !79
  %1664 = getelementptr inbounds nuw i8, ptr %1521, i64 1248
  %1665 = load <2 x double>, ptr %1664, align 16, !tbaa !26, !noalias !79
  %1666 = fmul <2 x double> %1605, %1665
  %1667 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1599, <2 x double> %1663, <2 x double> %1666)
  %1668 = getelementptr inbounds nuw i8, ptr %1521, i64 304
  %1669 = load <2 x double>, ptr %1668, align 16, !tbaa !26, !noalias !79
  %1670 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1669, <2 x double> %1595, <2 x double> splat (double 1.000000e+00))
  %1671 = fdiv <2 x double> splat (double 1.000000e+00), %1670
  %1672 = fmul <2 x double> %1587, %1592
  %1673 = fmul <2 x double> %1585, %1672
  %1674 = fmul <2 x double> %1673, %1625
  %1675 = select <2 x i1> %1639, <2 x double> zeroinitializer, <2 x double> %1674
  %1676 = getelementptr inbounds nuw i8, ptr %1521, i64 272
  %1677 = load <2 x double>, ptr %1676, align 16, !tbaa !26, !noalias !79
  %1678 = fmul <2 x double> %1661, splat (double 2.500000e-01)
  %1679 = fmul <2 x double> %1582, %1678
  %1680 = fneg <2 x double> %1587
  %1681 = fmul <2 x double> %1679, %1680
  %1682 = select <2 x i1> %1643, <2 x double> %1681, <2 x double> splat (double -0.000000e+00)
  %1683 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1677, <2 x double> %1675, <2 x double> %1682)
  %1684 = fadd <2 x double> %1630, %1640
  %1685 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1677, <2 x double> %1684, <2 x double> %1661)
  %1686 = fneg <2 x double> %1669
  %1687 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1686, <2 x double> %1667, <2 x double> %1685)
  %1688 = fneg <2 x double> %1565
  %1689 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1671, <2 x double> %1687, <2 x double> %1688)
  %1690 = fmul <2 x double> %1671, %1683
  %1691 = fcmp olt <2 x double> %1690, splat (double 8.000000e-01)
  %1692 = select <2 x i1> %1691, <2 x double> %1690, <2 x double> splat (double 8.000000e-01)
  %1693 = fsub <2 x double> splat (double 1.000000e+00), %1692
  %1694 = fdiv <2 x double> %1689, %1693
  %1695 = fadd <2 x double> %1565, %1694
  %1696 = getelementptr inbounds nuw i8, ptr %1521, i64 288
  %1697 = load <2 x double>, ptr %1696, align 16, !tbaa !26, !noalias !79
  %1698 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1686, <2 x double> %1667, <2 x double> %1697)
  %1699 = fmul <2 x double> %1671, %1698
  %1700 = fcmp olt <2 x double> %1695, %1699
  %1701 = select <2 x i1> %1700, <2 x double> %1695, <2 x double> %1699
  %1702 = select <2 x i1> %1564, <2 x double> %1701, <2 x double> %1562
  %1703 = select <2 x i1> %1514, <2 x double> %1563, <2 x double> %1702
  store <2 x double> %1703, ptr %1550, align 16, !tbaa !26
  br label %1704

1704:                                             ; preds = %1522, %1660
  %1705 = phi <2 x double> [ %1548, %1522 ], [ %1579, %1660 ]
  %1706 = phi <2 x double> [ %1547, %1522 ], [ %1576, %1660 ]
  %1707 = phi <2 x double> [ %1546, %1522 ], [ %1555, %1660 ]
  %1708 = phi <2 x double> [ %1545, %1522 ], [ %1636, %1660 ]
  %1709 = phi <2 x double> [ %1543, %1522 ], [ %1595, %1660 ]
  %1710 = phi <2 x double> [ %1539, %1522 ], [ %1575, %1660 ]
  %1711 = phi <2 x double> [ %1536, %1522 ], [ %1570, %1660 ]
  %1712 = phi <2 x i64> [ %1534, %1522 ], [ %1572, %1660 ]
  %1713 = phi <2 x double> [ %1532, %1522 ], [ %1605, %1660 ]
  %1714 = phi <2 x double> [ %1530, %1522 ], [ %1599, %1660 ]
  %1715 = phi <2 x i64> [ %1524, %1522 ], [ %1561, %1660 ]
  %1716 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %1717 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %1718 = icmp eq <2 x i64> %1715, zeroinitializer
  %1719 = select <2 x i1> %1718, <2 x double> %1717, <2 x double> %1716
  %1720 = getelementptr inbounds nuw i8, ptr %1521, i64 1472
  store <2 x double> %1719, ptr %1720, align 16, !tbaa !26
  %1721 = fcmp ogt <2 x double> %1707, zeroinitializer
  %1722 = select <2 x i1> %1721, <2 x double> %1707, <2 x double> zeroinitializer
  %1723 = fcmp olt <2 x double> %1722, splat (double 1.000000e+00)
  %1724 = select <2 x i1> %1723, <2 x double> %1722, <2 x double> splat (double 1.000000e+00)
  %1725 = getelementptr inbounds nuw i8, ptr %1521, i64 528
  %1726 = load <2 x double>, ptr %1725, align 16, !tbaa !26
  %1727 = fmul <2 x double> %1724, splat (double 4.180000e+03)
  %1728 = getelementptr inbounds nuw i8, ptr %1521, i64 224
  %1729 = load <2 x double>, ptr %1728, align 16, !tbaa !26
  %1730 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1727, <2 x double> %1729, <2 x double> %1726)
  %1731 = getelementptr inbounds nuw i8, ptr %1521, i64 1424
  %1732 = getelementptr inbounds nuw i8, ptr %1521, i64 1120
  %1733 = load <2 x double>, ptr %1732, align 16, !tbaa !26
  %1734 = getelementptr inbounds nuw i8, ptr %1521, i64 1440
  %1735 = getelementptr inbounds nuw i8, ptr %1521, i64 1344
  %1736 = load <2 x double>, ptr %1735, align 16, !tbaa !26
  %1737 = fmul <2 x double> %1713, %1736
  %1738 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1714, <2 x double> %1733, <2 x double> %1737)
  %1739 = getelementptr inbounds nuw i8, ptr %1521, i64 2080
  %1740 = fcmp ule <2 x double> %1726, zeroinitializer
  %1741 = getelementptr inbounds nuw i8, ptr %1521, i64 1824
  store <2 x double> %1724, ptr %1741, align 16, !tbaa !26
  %1742 = fsub <2 x double> splat (double 1.000000e+00), %1724
  %1743 = getelementptr inbounds nuw i8, ptr %1521, i64 736
  %1744 = icmp eq <2 x i64> %1712, zeroinitializer
  %1745 = select <2 x i1> %1744, <2 x double> zeroinitializer, <2 x double> %1705
  %1746 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1742, <2 x double> %1711, <2 x double> %1745)
  %1747 = getelementptr inbounds nuw i8, ptr %1521, i64 2064
  store <2 x double> %1746, ptr %1747, align 16, !tbaa !26
  %1748 = getelementptr inbounds nuw i8, ptr %1521, i64 1408
  %1749 = fmul <2 x double> %1730, %1709
  %1750 = icmp eq <2 x i64> %1712, splat (i64 -1)
  %1751 = select <2 x i1> %1740, <2 x i1> splat (i1 true), <2 x i1> %1750
  %1752 = select <2 x i1> %1751, <2 x double> zeroinitializer, <2 x double> %1749
  %1753 = getelementptr inbounds nuw i8, ptr %1521, i64 1840
  store <2 x double> %1752, ptr %1753, align 16, !tbaa !26
  %1754 = fmul <2 x double> %1730, %1738
  %1755 = select <2 x i1> %1751, <2 x double> zeroinitializer, <2 x double> %1754
  %1756 = getelementptr inbounds nuw i8, ptr %1521, i64 1856
  store <2 x double> %1755, ptr %1756, align 16, !tbaa !26
  %1757 = getelementptr inbounds nuw i8, ptr %1521, i64 1792
  store <2 x double> %1708, ptr %1757, align 16, !tbaa !26
  %1758 = getelementptr inbounds nuw i8, ptr %1521, i64 640
  %1759 = load <2 x double>, ptr %1758, align 16, !tbaa !26
  %1760 = getelementptr inbounds nuw i8, ptr %1521, i64 656
  %1761 = load <2 x double>, ptr %1760, align 16, !tbaa !26
  %1762 = getelementptr inbounds nuw i8, ptr %1521, i64 672
  %1763 = load <2 x double>, ptr %1762, align 16, !tbaa !26
  %1764 = getelementptr inbounds nuw i8, ptr %1521, i64 688
  %1765 = load <2 x double>, ptr %1764, align 16, !tbaa !26
  %1766 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1765, <2 x double> %1763)
  %1767 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1766, <2 x double> %1761)
  %1768 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1767, <2 x double> %1759)
  %1769 = getelementptr inbounds nuw i8, ptr %1521, i64 944
  store <2 x double> %1768, ptr %1769, align 16, !tbaa !26
  %1770 = getelementptr inbounds nuw i8, ptr %1521, i64 1168
  %1771 = load <2 x double>, ptr %1770, align 16, !tbaa !26
  %1772 = fmul <2 x double> %1714, %1771
  %1773 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1709, <2 x double> %1768, <2 x double> %1772)
  %1774 = getelementptr inbounds nuw i8, ptr %1521, i64 1392
  %1775 = load <2 x double>, ptr %1774, align 16, !tbaa !26
  %1776 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1713, <2 x double> %1775, <2 x double> %1773)
  %1777 = fmul <2 x double> %1776, splat (double 5.000000e-01)
  %1778 = getelementptr inbounds nuw i8, ptr %1521, i64 1776
  store <2 x double> %1777, ptr %1778, align 16, !tbaa !26
  %1779 = getelementptr inbounds nuw i8, ptr %1521, i64 576
  %1780 = load <2 x double>, ptr %1779, align 16, !tbaa !26
  %1781 = getelementptr inbounds nuw i8, ptr %1521, i64 592
  %1782 = load <2 x double>, ptr %1781, align 16, !tbaa !26
  %1783 = getelementptr inbounds nuw i8, ptr %1521, i64 608
  %1784 = load <2 x double>, ptr %1783, align 16, !tbaa !26
  %1785 = getelementptr inbounds nuw i8, ptr %1521, i64 624
  %1786 = load <2 x double>, ptr %1785, align 16, !tbaa !26
  %1787 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1786, <2 x double> %1784)
  %1788 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1787, <2 x double> %1782)
  %1789 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1788, <2 x double> %1780)
  %1790 = getelementptr inbounds nuw i8, ptr %1521, i64 1760
  store <2 x double> %1789, ptr %1790, align 16, !tbaa !26
  %1791 = getelementptr inbounds nuw i8, ptr %1521, i64 2128
  %1792 = load i64, ptr %1791, align 16, !tbaa !31
  %1793 = icmp eq i64 %1792, 0
  %1794 = getelementptr inbounds nuw i8, ptr %1521, i64 16
  %1795 = load <2 x double>, ptr %1794, align 16
  %1796 = fsub <2 x double> %1710, %1795
  %1797 = fdiv <2 x double> splat (double 1.000000e+00), %1796
  %1798 = fdiv <2 x double> %1789, %1710
  %1799 = select i1 %1793, <2 x double> %1798, <2 x double> %1797
  %1800 = getelementptr inbounds nuw i8, ptr %1521, i64 1728
  store <2 x double> %1799, ptr %1800, align 16, !tbaa !26
  %1801 = load i64, ptr %132, align 16, !tbaa !21
  %1802 = getelementptr inbounds nuw i8, ptr %1521, i64 2264
  %1803 = load ptr, ptr %1802, align 8, !tbaa !36
  br i1 %1793, label %1804, label %1808

1804:                                             ; preds = %1704
  %1805 = getelementptr inbounds <2 x double>, ptr %1803, i64 %1801
  %1806 = load <2 x double>, ptr %1805, align 16, !tbaa !26
  %1807 = fmul <2 x double> %1799, %1806
  br label %1824

1808:                                             ; preds = %1704
  %1809 = shl nsw i64 %1801, 6
  %1810 = getelementptr inbounds i8, ptr %1803, i64 %1809
  %1811 = load <2 x double>, ptr %1810, align 16, !tbaa !26
  %1812 = getelementptr inbounds nuw i8, ptr %1810, i64 16
  %1813 = load <2 x double>, ptr %1812, align 16, !tbaa !26
  %1814 = getelementptr inbounds nuw i8, ptr %1810, i64 32
  %1815 = load <2 x double>, ptr %1814, align 16, !tbaa !26
  %1816 = getelementptr inbounds nuw i8, ptr %1810, i64 48
  %1817 = load <2 x double>, ptr %1816, align 16, !tbaa !26
  %1818 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1817, <2 x double> %1815)
  %1819 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1818, <2 x double> %1813)
  %1820 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1819, <2 x double> %1811)
  %1821 = icmp sgt i64 %1801, %1792
  %1822 = fmul <2 x double> %1799, %1820
  %1823 = select i1 %1821, <2 x double> %1822, <2 x double> %1820
  br label %1824

1824:                                             ; preds = %1804, %1808
  %1825 = phi <2 x double> [ %1807, %1804 ], [ %1823, %1808 ]
  %1826 = getelementptr inbounds nuw i8, ptr %1521, i64 800
  %1827 = load <2 x double>, ptr %1826, align 16, !tbaa !26
  %1828 = getelementptr inbounds nuw i8, ptr %1521, i64 1488
  %1829 = load <2 x double>, ptr %1828, align 16, !tbaa !26
  %1830 = fcmp ogt <2 x double> %1706, splat (double 0x3D719799812DEA11)
  %1831 = select <2 x i1> %1830, <2 x double> %1706, <2 x double> splat (double 0x3D719799812DEA11)
  %1832 = getelementptr inbounds nuw i8, ptr %1521, i64 176
  %1833 = load <2 x double>, ptr %1832, align 16, !tbaa !26
  %1834 = fdiv <2 x double> %1833, %1831
  %1835 = getelementptr inbounds nuw i8, ptr %1521, i64 1744
  store <2 x double> %1834, ptr %1835, align 16, !tbaa !26
  %1836 = getelementptr inbounds nuw i8, ptr %1521, i64 2152
  %1837 = load ptr, ptr %1836, align 8, !tbaa !59
  %1838 = load i64, ptr %132, align 16, !tbaa !21
  %1839 = getelementptr <2 x double>, ptr %1837, i64 %1838
  %1840 = getelementptr i8, ptr %1839, i64 -16
  %1841 = load <2 x double>, ptr %1840, align 16, !tbaa !26
  %1842 = fadd <2 x double> %1829, %1841
  %1843 = fmul <2 x double> %1842, splat (double 5.000000e-01)
  %1844 = getelementptr inbounds nuw i8, ptr %1521, i64 48
  %1845 = load <2 x double>, ptr %1844, align 16, !tbaa !26
  %1846 = getelementptr inbounds nuw i8, ptr %1521, i64 64
  %1847 = load <2 x double>, ptr %1846, align 16, !tbaa !26
  %1848 = getelementptr inbounds nuw i8, ptr %1521, i64 80
  %1849 = load <2 x double>, ptr %1848, align 16, !tbaa !26
  %1850 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1843, <2 x double> %1849, <2 x double> %1847)
  %1851 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1843, <2 x double> %1850, <2 x double> %1845)
  %1852 = fmul <2 x double> %1825, %1851
  %1853 = fmul <2 x double> %1724, %1852
  %1854 = getelementptr inbounds nuw i8, ptr %1521, i64 512
  %1855 = load <2 x double>, ptr %1854, align 16, !tbaa !26
  %1856 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1853, <2 x double> %1855, <2 x double> splat (double 1.000000e+00))
  %1857 = fdiv <2 x double> splat (double 1.000000e+00), %1856
  %1858 = select <2 x i1> %1744, <2 x double> %1857, <2 x double> splat (double 1.000000e+00)
  %1859 = getelementptr inbounds nuw i8, ptr %1521, i64 1808
  store <2 x double> %1858, ptr %1859, align 16, !tbaa !26
  %1860 = fmul <2 x double> %1852, %1858
  %1861 = getelementptr inbounds nuw i8, ptr %1521, i64 1600
  store <2 x double> %1860, ptr %1861, align 16, !tbaa !26
  %1862 = fmul <2 x double> %1777, splat (double 2.000000e+00)
  %1863 = getelementptr inbounds nuw i8, ptr %1521, i64 96
  %1864 = load <2 x double>, ptr %1863, align 16, !tbaa !26
  %1865 = getelementptr inbounds nuw i8, ptr %1521, i64 112
  %1866 = load <2 x double>, ptr %1865, align 16, !tbaa !26
  %1867 = getelementptr inbounds nuw i8, ptr %1521, i64 128
  %1868 = load <2 x double>, ptr %1867, align 16, !tbaa !26
  %1869 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1829, <2 x double> %1868, <2 x double> %1866)
  %1870 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1829, <2 x double> %1869, <2 x double> %1864)
  %1871 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1862, <2 x double> %1870, <2 x double> %1860)
  %1872 = getelementptr inbounds nuw i8, ptr %1521, i64 1632
  store <2 x double> %1871, ptr %1872, align 16, !tbaa !26
  %1873 = fmul <2 x double> %1742, %1827
  %1874 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1873, <2 x double> %1711, <2 x double> splat (double 1.000000e+00))
  %1875 = fdiv <2 x double> %1827, %1874
  %1876 = load i64, ptr %133, align 8, !tbaa !22
  %1877 = sitofp i64 %1876 to double
  %1878 = fmul double %1877, 2.000000e+00
  %1879 = insertelement <2 x double> poison, double %1878, i64 0
  %1880 = shufflevector <2 x double> %1879, <2 x double> poison, <2 x i32> zeroinitializer
  %1881 = fmul <2 x double> %1834, %1880
  %1882 = fadd <2 x double> %1875, %1881
  %1883 = fdiv <2 x double> %1875, %1882
  %1884 = fmul <2 x double> %1789, %1881
  %1885 = select <2 x i1> %1744, <2 x double> %1875, <2 x double> %1884
  %1886 = getelementptr inbounds nuw i8, ptr %1521, i64 1616
  store <2 x double> %1885, ptr %1886, align 16, !tbaa !26
  %1887 = fmul <2 x double> %1881, %1883
  %1888 = select <2 x i1> %1744, <2 x double> %1875, <2 x double> %1887
  %1889 = getelementptr inbounds nuw i8, ptr %1521, i64 1648
  store <2 x double> %1888, ptr %1889, align 16, !tbaa !26
  %1890 = select <2 x i1> %1744, <2 x double> splat (double 1.000000e+00), <2 x double> %1883
  %1891 = getelementptr inbounds nuw i8, ptr %1521, i64 1664
  store <2 x double> %1890, ptr %1891, align 16, !tbaa !26
  br i1 %1793, label %2053, label %1892

1892:                                             ; preds = %1824
  %1893 = getelementptr inbounds nuw i8, ptr %1521, i64 144
  %1894 = load <2 x double>, ptr %1893, align 16, !tbaa !26
  %1895 = getelementptr inbounds nuw i8, ptr %1521, i64 160
  %1896 = load <2 x double>, ptr %1895, align 16, !tbaa !26
  %1897 = getelementptr inbounds nuw i8, ptr %1521, i64 384
  %1898 = load <2 x double>, ptr %1897, align 16, !tbaa !26
  %1899 = load i64, ptr %132, align 16, !tbaa !21
  %1900 = fsub <2 x double> %1768, %1898
  %1901 = fmul <2 x double> %1866, splat (double 5.000000e-01)
  %1902 = fmul <2 x double> %1868, splat (double 0x3FE5555555555555)
  %1903 = getelementptr inbounds nuw i8, ptr %1521, i64 2240
  %1904 = load ptr, ptr %1903, align 16, !tbaa !74
  %1905 = getelementptr inbounds nuw i8, ptr %1521, i64 2248
  %1906 = load ptr, ptr %1905, align 8, !tbaa !50
  %1907 = getelementptr inbounds nuw i8, ptr %1521, i64 2176
  %1908 = load ptr, ptr %1907, align 16, !tbaa !60
  %1909 = getelementptr inbounds nuw i8, ptr %1521, i64 2216
  %1910 = load ptr, ptr %1909, align 8, !tbaa !82
  %1911 = getelementptr inbounds nuw i8, ptr %1521, i64 2224
  %1912 = load ptr, ptr %1911, align 16, !tbaa !83
  %1913 = getelementptr inbounds nuw i8, ptr %1521, i64 2232
  %1914 = load ptr, ptr %1913, align 8, !tbaa !84
  %1915 = getelementptr inbounds nuw i8, ptr %1521, i64 2200
  %1916 = load ptr, ptr %1915, align 8, !tbaa !85
  %1917 = getelementptr inbounds nuw i8, ptr %1521, i64 2208
  %1918 = load ptr, ptr %1917, align 16, !tbaa !86
  %1919 = icmp sgt i64 %1899, 0
  br i1 %1919, label %1920, label %2165

1920:                                             ; preds = %1892
  %1921 = load <2 x double>, ptr %1837, align 16, !tbaa !26
  %1922 = getelementptr inbounds nuw i8, ptr %1521, i64 720
  %1923 = load <2 x double>, ptr %1922, align 16, !tbaa !26
  %1924 = getelementptr inbounds nuw i8, ptr %1521, i64 704
  %1925 = load <2 x double>, ptr %1924, align 16, !tbaa !26
  %1926 = fmul <2 x double> %1777, splat (double -2.000000e+00)
  %1927 = fmul <2 x double> %1926, %1829
  %1928 = fmul <2 x double> %1829, %1927
  %1929 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1829, <2 x double> %1902, <2 x double> %1901)
  %1930 = fmul <2 x double> %1928, %1929
  %1931 = getelementptr inbounds nuw i8, ptr %1521, i64 2264
  %1932 = fmul <2 x double> %1796, %1923
  %1933 = fdiv <2 x double> %1925, %1894
  br label %1934

1934:                                             ; preds = %1920, %2018
  %1935 = phi <2 x double> [ %1921, %1920 ], [ %2022, %2018 ]
  %1936 = phi <2 x double> [ zeroinitializer, %1920 ], [ %2019, %2018 ]
  %1937 = phi <2 x double> [ zeroinitializer, %1920 ], [ %2020, %2018 ]
  %1938 = phi <2 x double> [ zeroinitializer, %1920 ], [ %2021, %2018 ]
  %1939 = phi <2 x double> [ zeroinitializer, %1920 ], [ %2048, %2018 ]
  %1940 = phi <2 x double> [ zeroinitializer, %1920 ], [ %2050, %2018 ]
  %1941 = phi <2 x double> [ %1896, %1920 ], [ %2023, %2018 ]
  %1942 = phi i64 [ 0, %1920 ], [ %1944, %2018 ]
  %1943 = phi <2 x double> [ zeroinitializer, %1920 ], [ %2024, %2018 ]
  %1944 = add nuw nsw i64 %1942, 1
  %1945 = icmp slt i64 %1944, %1899
  br i1 %1945, label %1946, label %2015

1946:                                             ; preds = %1934
  %1947 = getelementptr inbounds nuw <2 x double>, ptr %1837, i64 %1944
  %1948 = load <2 x double>, ptr %1947, align 16, !tbaa !26
  %1949 = icmp slt i64 %1944, %1792
  br i1 %1949, label %1957, label %1950

1950:                                             ; preds = %1946
  %1951 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1948, <2 x double> %1868, <2 x double> %1866)
  %1952 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1948, <2 x double> %1951, <2 x double> %1864)
  %1953 = fneg <2 x double> %1948
  %1954 = fmul <2 x double> %1948, %1953
  %1955 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1948, <2 x double> %1902, <2 x double> %1901)
  %1956 = fmul <2 x double> %1954, %1955
  br label %1957

1957:                                             ; preds = %1946, %1950
  %1958 = phi <2 x double> [ %1952, %1950 ], [ %1896, %1946 ]
  %1959 = phi <2 x double> [ %1956, %1950 ], [ zeroinitializer, %1946 ]
  %1960 = load i64, ptr %1791, align 16, !tbaa !31
  %1961 = icmp eq i64 %1960, 0
  %1962 = load ptr, ptr %1931, align 8, !tbaa !36
  br i1 %1961, label %1963, label %1967

1963:                                             ; preds = %1957
  %1964 = getelementptr inbounds nuw <2 x double>, ptr %1962, i64 %1944
  %1965 = load <2 x double>, ptr %1964, align 16, !tbaa !26
  %1966 = fmul <2 x double> %1799, %1965
  br label %1983

1967:                                             ; preds = %1957
  %1968 = shl nsw i64 %1944, 6
  %1969 = getelementptr inbounds nuw i8, ptr %1962, i64 %1968
  %1970 = load <2 x double>, ptr %1969, align 16, !tbaa !26
  %1971 = getelementptr inbounds nuw i8, ptr %1969, i64 16
  %1972 = load <2 x double>, ptr %1971, align 16, !tbaa !26
  %1973 = getelementptr inbounds nuw i8, ptr %1969, i64 32
  %1974 = load <2 x double>, ptr %1973, align 16, !tbaa !26
  %1975 = getelementptr inbounds nuw i8, ptr %1969, i64 48
  %1976 = load <2 x double>, ptr %1975, align 16, !tbaa !26
  %1977 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1976, <2 x double> %1974)
  %1978 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1977, <2 x double> %1972)
  %1979 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1710, <2 x double> %1978, <2 x double> %1970)
  %1980 = icmp slt i64 %1942, %1960
  %1981 = fmul <2 x double> %1799, %1979
  %1982 = select i1 %1980, <2 x double> %1979, <2 x double> %1981
  br label %1983

1983:                                             ; preds = %1967, %1963
  %1984 = phi <2 x double> [ %1966, %1963 ], [ %1982, %1967 ]
  %1985 = icmp slt i64 %1942, %1960
  br i1 %1985, label %1992, label %1986

1986:                                             ; preds = %1983
  %1987 = fadd <2 x double> %1935, %1948
  %1988 = fmul <2 x double> %1987, splat (double 5.000000e-01)
  %1989 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1988, <2 x double> %1849, <2 x double> %1847)
  %1990 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1988, <2 x double> %1989, <2 x double> %1845)
  %1991 = fmul <2 x double> %1990, %1984
  br label %2002

1992:                                             ; preds = %1983
  %1993 = icmp slt i64 %1944, %1960
  br i1 %1993, label %1994, label %1996

1994:                                             ; preds = %1992
  %1995 = fmul <2 x double> %1894, %1984
  br label %2002

1996:                                             ; preds = %1992
  %1997 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1948, <2 x double> %1849, <2 x double> %1847)
  %1998 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1948, <2 x double> %1997, <2 x double> %1845)
  %1999 = fdiv <2 x double> %1932, %1998
  %2000 = fadd <2 x double> %1933, %1999
  %2001 = fdiv <2 x double> %1984, %2000
  br label %2002

2002:                                             ; preds = %1986, %1994, %1996
  %2003 = phi <2 x double> [ %1991, %1986 ], [ %1995, %1994 ], [ %2001, %1996 ]
  br i1 %1949, label %2008, label %2004

2004:                                             ; preds = %2002
  %2005 = getelementptr inbounds nuw <2 x double>, ptr %1904, i64 %1944
  %2006 = load <2 x double>, ptr %2005, align 16, !tbaa !26
  %2007 = fmul <2 x double> %1777, %2006
  br label %2008

2008:                                             ; preds = %2002, %2004
  %2009 = phi <2 x double> [ %2007, %2004 ], [ zeroinitializer, %2002 ]
  %2010 = fneg <2 x double> %2009
  %2011 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2010, <2 x double> %1941, <2 x double> %2003)
  %2012 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2009, <2 x double> %1958, <2 x double> %2003)
  %2013 = fadd <2 x double> %1943, %1959
  %2014 = fmul <2 x double> %2013, %2009
  br label %2018

2015:                                             ; preds = %1934
  %2016 = load <2 x double>, ptr %1861, align 16, !tbaa !26
  %2017 = load <2 x double>, ptr %1872, align 16, !tbaa !26
  br label %2018

2018:                                             ; preds = %2015, %2008
  %2019 = phi <2 x double> [ %2011, %2008 ], [ %2016, %2015 ]
  %2020 = phi <2 x double> [ %2012, %2008 ], [ %2017, %2015 ]
  %2021 = phi <2 x double> [ %2014, %2008 ], [ %1930, %2015 ]
  %2022 = phi <2 x double> [ %1948, %2008 ], [ %1935, %2015 ]
  %2023 = phi <2 x double> [ %1958, %2008 ], [ %1941, %2015 ]
  %2024 = phi <2 x double> [ %1959, %2008 ], [ %1943, %2015 ]
  %2025 = getelementptr inbounds nuw <2 x double>, ptr %1906, i64 %1942
  %2026 = load <2 x double>, ptr %2025, align 16, !tbaa !26
  %2027 = icmp slt i64 %1942, %1792
  %2028 = select i1 %2027, <2 x double> %1898, <2 x double> %1900
  %2029 = fmul <2 x double> %1709, %2028
  %2030 = fmul <2 x double> %2029, %2026
  %2031 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2030, <2 x double> %1941, <2 x double> %2019)
  %2032 = fadd <2 x double> %1937, %2031
  %2033 = fsub <2 x double> %2021, %1938
  %2034 = fneg <2 x double> %2030
  %2035 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2034, <2 x double> %1943, <2 x double> %2033)
  %2036 = getelementptr inbounds nuw <2 x double>, ptr %1908, i64 %1942
  %2037 = load <2 x double>, ptr %2036, align 16, !tbaa !26
  %2038 = fsub <2 x double> %2035, %2037
  %2039 = fneg <2 x double> %1936
  %2040 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2039, <2 x double> %1940, <2 x double> %2032)
  %2041 = fdiv <2 x double> splat (double 1.000000e+00), %2040
  %2042 = getelementptr inbounds nuw <2 x double>, ptr %1910, i64 %1942
  store <2 x double> %2038, ptr %2042, align 16, !tbaa !26
  %2043 = getelementptr inbounds nuw <2 x double>, ptr %1912, i64 %1942
  store <2 x double> %1936, ptr %2043, align 16, !tbaa !26
  %2044 = fadd <2 x double> %1936, %2020
  %2045 = fsub <2 x double> %2044, %2032
  %2046 = getelementptr inbounds nuw <2 x double>, ptr %1914, i64 %1942
  store <2 x double> %2045, ptr %2046, align 16, !tbaa !26
  %2047 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1936, <2 x double> %1939, <2 x double> %2038)
  %2048 = fmul <2 x double> %2047, %2041
  %2049 = getelementptr inbounds nuw <2 x double>, ptr %1916, i64 %1942
  store <2 x double> %2048, ptr %2049, align 16, !tbaa !26
  %2050 = fmul <2 x double> %2020, %2041
  %2051 = getelementptr inbounds nuw <2 x double>, ptr %1918, i64 %1942
  store <2 x double> %2050, ptr %2051, align 16, !tbaa !26
  %2052 = icmp eq i64 %1944, %1899
  br i1 %2052, label %2165, label %1934, !llvm.loop !87

2053:                                             ; preds = %1824
  %2054 = getelementptr inbounds nuw i8, ptr %1521, i64 384
  %2055 = load <2 x double>, ptr %2054, align 16, !tbaa !26
  %2056 = load i64, ptr %132, align 16, !tbaa !21
  %2057 = fsub <2 x double> %1768, %2055
  %2058 = fmul <2 x double> %1709, %2057
  %2059 = fmul <2 x double> %1866, splat (double 5.000000e-01)
  %2060 = fmul <2 x double> %1868, splat (double 0x3FE5555555555555)
  %2061 = getelementptr inbounds nuw i8, ptr %1521, i64 2240
  %2062 = load ptr, ptr %2061, align 16, !tbaa !74
  %2063 = getelementptr inbounds nuw i8, ptr %1521, i64 2248
  %2064 = load ptr, ptr %2063, align 8, !tbaa !50
  %2065 = getelementptr inbounds nuw i8, ptr %1521, i64 2176
  %2066 = load ptr, ptr %2065, align 16, !tbaa !60
  %2067 = getelementptr inbounds nuw i8, ptr %1521, i64 2216
  %2068 = load ptr, ptr %2067, align 8, !tbaa !82
  %2069 = getelementptr inbounds nuw i8, ptr %1521, i64 2224
  %2070 = load ptr, ptr %2069, align 16, !tbaa !83
  %2071 = getelementptr inbounds nuw i8, ptr %1521, i64 2232
  %2072 = load ptr, ptr %2071, align 8, !tbaa !84
  %2073 = getelementptr inbounds nuw i8, ptr %1521, i64 2200
  %2074 = load ptr, ptr %2073, align 8, !tbaa !85
  %2075 = getelementptr inbounds nuw i8, ptr %1521, i64 2208
  %2076 = load ptr, ptr %2075, align 16, !tbaa !86
  %2077 = icmp sgt i64 %2056, 0
  br i1 %2077, label %2078, label %2165

2078:                                             ; preds = %2053
  %2079 = load <2 x double>, ptr %1837, align 16, !tbaa !26
  %2080 = fneg <2 x double> %2079
  %2081 = fmul <2 x double> %2079, %2080
  %2082 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2079, <2 x double> %2060, <2 x double> %2059)
  %2083 = fmul <2 x double> %2081, %2082
  %2084 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2079, <2 x double> %1868, <2 x double> %1866)
  %2085 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2079, <2 x double> %2084, <2 x double> %1864)
  %2086 = fmul <2 x double> %1777, splat (double -2.000000e+00)
  %2087 = fmul <2 x double> %2086, %1829
  %2088 = fmul <2 x double> %1829, %2087
  %2089 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1829, <2 x double> %2060, <2 x double> %2059)
  %2090 = fmul <2 x double> %2088, %2089
  %2091 = getelementptr inbounds nuw i8, ptr %1521, i64 2264
  br label %2092

2092:                                             ; preds = %2078, %2133
  %2093 = phi <2 x double> [ %2079, %2078 ], [ %2137, %2133 ]
  %2094 = phi <2 x double> [ zeroinitializer, %2078 ], [ %2134, %2133 ]
  %2095 = phi <2 x double> [ zeroinitializer, %2078 ], [ %2135, %2133 ]
  %2096 = phi <2 x double> [ zeroinitializer, %2078 ], [ %2136, %2133 ]
  %2097 = phi <2 x double> [ zeroinitializer, %2078 ], [ %2160, %2133 ]
  %2098 = phi <2 x double> [ zeroinitializer, %2078 ], [ %2162, %2133 ]
  %2099 = phi <2 x double> [ %2085, %2078 ], [ %2138, %2133 ]
  %2100 = phi i64 [ 0, %2078 ], [ %2102, %2133 ]
  %2101 = phi <2 x double> [ %2083, %2078 ], [ %2139, %2133 ]
  %2102 = add nuw nsw i64 %2100, 1
  %2103 = icmp slt i64 %2102, %2056
  br i1 %2103, label %2104, label %2130

2104:                                             ; preds = %2092
  %2105 = getelementptr inbounds nuw <2 x double>, ptr %1837, i64 %2102
  %2106 = load <2 x double>, ptr %2105, align 16, !tbaa !26
  %2107 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2106, <2 x double> %1868, <2 x double> %1866)
  %2108 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2106, <2 x double> %2107, <2 x double> %1864)
  %2109 = fneg <2 x double> %2106
  %2110 = fmul <2 x double> %2106, %2109
  %2111 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2106, <2 x double> %2060, <2 x double> %2059)
  %2112 = fmul <2 x double> %2110, %2111
  %2113 = fadd <2 x double> %2093, %2106
  %2114 = fmul <2 x double> %2113, splat (double 5.000000e-01)
  %2115 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2114, <2 x double> %1849, <2 x double> %1847)
  %2116 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2114, <2 x double> %2115, <2 x double> %1845)
  %2117 = load ptr, ptr %2091, align 8, !tbaa !36
  %2118 = getelementptr inbounds nuw <2 x double>, ptr %2117, i64 %2102
  %2119 = load <2 x double>, ptr %2118, align 16, !tbaa !26
  %2120 = fmul <2 x double> %1799, %2119
  %2121 = fmul <2 x double> %2120, %2116
  %2122 = getelementptr inbounds nuw <2 x double>, ptr %2062, i64 %2102
  %2123 = load <2 x double>, ptr %2122, align 16, !tbaa !26
  %2124 = fmul <2 x double> %1777, %2123
  %2125 = fneg <2 x double> %2124
  %2126 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2125, <2 x double> %2099, <2 x double> %2121)
  %2127 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2124, <2 x double> %2108, <2 x double> %2121)
  %2128 = fadd <2 x double> %2101, %2112
  %2129 = fmul <2 x double> %2128, %2124
  br label %2133

2130:                                             ; preds = %2092
  %2131 = load <2 x double>, ptr %1861, align 16, !tbaa !26
  %2132 = load <2 x double>, ptr %1872, align 16, !tbaa !26
  br label %2133

2133:                                             ; preds = %2130, %2104
  %2134 = phi <2 x double> [ %2126, %2104 ], [ %2131, %2130 ]
  %2135 = phi <2 x double> [ %2127, %2104 ], [ %2132, %2130 ]
  %2136 = phi <2 x double> [ %2129, %2104 ], [ %2090, %2130 ]
  %2137 = phi <2 x double> [ %2106, %2104 ], [ %2093, %2130 ]
  %2138 = phi <2 x double> [ %2108, %2104 ], [ %2099, %2130 ]
  %2139 = phi <2 x double> [ %2112, %2104 ], [ %2101, %2130 ]
  %2140 = getelementptr inbounds nuw <2 x double>, ptr %2064, i64 %2100
  %2141 = load <2 x double>, ptr %2140, align 16, !tbaa !26
  %2142 = fmul <2 x double> %2058, %2141
  %2143 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2142, <2 x double> %2099, <2 x double> %2134)
  %2144 = fadd <2 x double> %2095, %2143
  %2145 = fsub <2 x double> %2136, %2096
  %2146 = fneg <2 x double> %2142
  %2147 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2146, <2 x double> %2101, <2 x double> %2145)
  %2148 = getelementptr inbounds nuw <2 x double>, ptr %2066, i64 %2100
  %2149 = load <2 x double>, ptr %2148, align 16, !tbaa !26
  %2150 = fsub <2 x double> %2147, %2149
  %2151 = fneg <2 x double> %2094
  %2152 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2151, <2 x double> %2098, <2 x double> %2144)
  %2153 = fdiv <2 x double> splat (double 1.000000e+00), %2152
  %2154 = getelementptr inbounds nuw <2 x double>, ptr %2068, i64 %2100
  store <2 x double> %2150, ptr %2154, align 16, !tbaa !26
  %2155 = getelementptr inbounds nuw <2 x double>, ptr %2070, i64 %2100
  store <2 x double> %2094, ptr %2155, align 16, !tbaa !26
  %2156 = fadd <2 x double> %2094, %2135
  %2157 = fsub <2 x double> %2156, %2144
  %2158 = getelementptr inbounds nuw <2 x double>, ptr %2072, i64 %2100
  store <2 x double> %2157, ptr %2158, align 16, !tbaa !26
  %2159 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2094, <2 x double> %2097, <2 x double> %2150)
  %2160 = fmul <2 x double> %2159, %2153
  %2161 = getelementptr inbounds nuw <2 x double>, ptr %2074, i64 %2100
  store <2 x double> %2160, ptr %2161, align 16, !tbaa !26
  %2162 = fmul <2 x double> %2135, %2153
  %2163 = getelementptr inbounds nuw <2 x double>, ptr %2076, i64 %2100
  store <2 x double> %2162, ptr %2163, align 16, !tbaa !26
  %2164 = icmp eq i64 %2102, %2056
  br i1 %2164, label %2165, label %2092, !llvm.loop !88

2165:                                             ; preds = %2018, %2133, %1892, %2053
  %2166 = getelementptr inbounds nuw i8, ptr %1521, i64 2032
  store <2 x double> splat (double 1.000000e+09), ptr %2166, align 16, !tbaa !26
  %2167 = getelementptr inbounds nuw i8, ptr %1521, i64 2200
  %2168 = load ptr, ptr %2167, align 8, !tbaa !85
  %2169 = load i64, ptr %132, align 16, !tbaa !21
  %2170 = add nsw i64 %2169, -1
  %2171 = getelementptr inbounds <2 x double>, ptr %2168, i64 %2170
  %2172 = load <2 x double>, ptr %2171, align 16, !tbaa !26
  %2173 = getelementptr inbounds nuw i8, ptr %1521, i64 2208
  %2174 = load ptr, ptr %2173, align 16, !tbaa !86
  %2175 = getelementptr inbounds <2 x double>, ptr %2174, i64 %2170
  %2176 = load <2 x double>, ptr %2175, align 16, !tbaa !26
  %2177 = load <2 x double>, ptr %1861, align 16, !tbaa !26
  %2178 = fmul <2 x double> %2172, %2177
  %2179 = fsub <2 x double> splat (double 1.000000e+00), %2176
  %2180 = fmul <2 x double> %2177, %2179
  %2181 = load <2 x double>, ptr %1886, align 16, !tbaa !26
  %2182 = load <2 x double>, ptr %1720, align 16, !tbaa !26
  %2183 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2181, <2 x double> %2182, <2 x double> %2178)
  %2184 = load <2 x double>, ptr %1756, align 16, !tbaa !26
  %2185 = fsub <2 x double> %2183, %2184
  %2186 = fadd <2 x double> %2180, %2181
  %2187 = load <2 x double>, ptr %1753, align 16, !tbaa !26
  %2188 = fadd <2 x double> %2186, %2187
  %2189 = load <2 x i64>, ptr %1739, align 16, !tbaa !26
  %2190 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2189)
  %2191 = icmp eq i64 %2190, 0
  %2192 = load i64, ptr %133, align 8, !tbaa !22
  br i1 %2191, label %2193, label %2208

2193:                                             ; preds = %2165
  %2194 = icmp slt i64 %2192, 0
  br i1 %2194, label %2199, label %2195

2195:                                             ; preds = %2193
  %2196 = getelementptr inbounds nuw i8, ptr %1521, i64 352
  %2197 = getelementptr inbounds nuw i8, ptr %1521, i64 2320
  %2198 = load <2 x double>, ptr %2196, align 16, !tbaa !26
  br label %2201

2199:                                             ; preds = %2201, %2193
  %2200 = getelementptr inbounds nuw i8, ptr %1521, i64 1552
  store <2 x double> %2185, ptr %2200, align 16, !tbaa !26
  br label %2335

2201:                                             ; preds = %2195, %2201
  %2202 = phi i64 [ 0, %2195 ], [ %2205, %2201 ]
  %2203 = load ptr, ptr %2197, align 16, !tbaa !89
  %2204 = getelementptr inbounds nuw <2 x double>, ptr %2203, i64 %2202
  store <2 x double> %2198, ptr %2204, align 16, !tbaa !26
  %2205 = add nuw nsw i64 %2202, 1
  %2206 = load i64, ptr %133, align 8, !tbaa !22
  %2207 = icmp slt i64 %2202, %2206
  br i1 %2207, label %2201, label %2199, !llvm.loop !90

2208:                                             ; preds = %2165
  %2209 = load <2 x double>, ptr %1743, align 16, !tbaa !26
  %2210 = load <2 x double>, ptr %1757, align 16, !tbaa !26
  %2211 = getelementptr inbounds nuw i8, ptr %1521, i64 320
  %2212 = load <2 x double>, ptr %2211, align 16, !tbaa !26
  %2213 = fmul <2 x double> %2210, %2212
  %2214 = load <2 x double>, ptr %1521, align 16, !tbaa !26
  %2215 = fsub <2 x double> %2214, %2209
  %2216 = sitofp i64 %2192 to double
  %2217 = insertelement <2 x double> poison, double %2216, i64 0
  %2218 = shufflevector <2 x double> %2217, <2 x double> poison, <2 x i32> zeroinitializer
  %2219 = fdiv <2 x double> %2215, %2218
  %2220 = load <2 x double>, ptr %1889, align 16, !tbaa !26
  %2221 = load <2 x double>, ptr %1891, align 16, !tbaa !26
  %2222 = getelementptr inbounds nuw i8, ptr %1521, i64 352
  %2223 = load <2 x double>, ptr %2222, align 16, !tbaa !26
  %2224 = getelementptr inbounds nuw i8, ptr %1521, i64 2320
  %2225 = load ptr, ptr %2224, align 16, !tbaa !89
  %2226 = getelementptr inbounds <2 x double>, ptr %2225, i64 %2192
  store <2 x double> %2223, ptr %2226, align 16, !tbaa !26
  %2227 = icmp sgt i64 %2192, 0
  br i1 %2227, label %2228, label %2319

2228:                                             ; preds = %2208
  %2229 = fneg <2 x double> %2213
  %2230 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2229, <2 x double> %2221, <2 x double> %2220)
  %2231 = fsub <2 x double> splat (double 1.000000e+00), %2221
  %2232 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2213, <2 x double> %2231, <2 x double> %2220)
  %2233 = getelementptr inbounds nuw i8, ptr %1521, i64 2328
  %2234 = getelementptr inbounds nuw i8, ptr %1521, i64 2336
  %2235 = getelementptr inbounds nuw i8, ptr %1521, i64 192
  %2236 = fmul <2 x double> %2213, splat (double -5.000000e-01)
  %2237 = getelementptr inbounds nuw i8, ptr %1521, i64 2296
  %2238 = getelementptr inbounds nuw i8, ptr %1521, i64 2304
  %2239 = getelementptr inbounds nuw i8, ptr %1521, i64 2312
  br label %2240

2240:                                             ; preds = %2228, %2294
  %2241 = phi <2 x double> [ %2232, %2228 ], [ %2296, %2294 ]
  %2242 = phi <2 x double> [ %2230, %2228 ], [ %2297, %2294 ]
  %2243 = phi <2 x double> [ %2182, %2228 ], [ %2312, %2294 ]
  %2244 = phi <2 x double> [ zeroinitializer, %2228 ], [ %2315, %2294 ]
  %2245 = phi <2 x double> [ %2223, %2228 ], [ %2258, %2294 ]
  %2246 = phi i64 [ %2192, %2228 ], [ %2247, %2294 ]
  %2247 = add nsw i64 %2246, -1
  %2248 = uitofp nneg i64 %2247 to double
  %2249 = insertelement <2 x double> poison, double %2248, i64 0
  %2250 = shufflevector <2 x double> %2249, <2 x double> poison, <2 x i32> zeroinitializer
  %2251 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2250, <2 x double> %2219, <2 x double> %2209)
  %2252 = load <2 x double>, ptr %1758, align 16, !tbaa !26
  %2253 = load <2 x double>, ptr %1760, align 16, !tbaa !26
  %2254 = load <2 x double>, ptr %1762, align 16, !tbaa !26
  %2255 = load <2 x double>, ptr %1764, align 16, !tbaa !26
  %2256 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2251, <2 x double> %2255, <2 x double> %2254)
  %2257 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2251, <2 x double> %2256, <2 x double> %2253)
  %2258 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2251, <2 x double> %2257, <2 x double> %2252)
  %2259 = load <2 x double>, ptr %1748, align 16, !tbaa !26
  %2260 = load <2 x double>, ptr %1731, align 16, !tbaa !26
  %2261 = load ptr, ptr %2233, align 8, !tbaa !51
  %2262 = getelementptr inbounds nuw <2 x double>, ptr %2261, i64 %2247
  %2263 = load <2 x double>, ptr %2262, align 16, !tbaa !26
  %2264 = fmul <2 x double> %2260, %2263
  %2265 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2259, <2 x double> %2258, <2 x double> %2264)
  %2266 = load <2 x double>, ptr %1734, align 16, !tbaa !26
  %2267 = load ptr, ptr %2234, align 16, !tbaa !61
  %2268 = getelementptr inbounds nuw <2 x double>, ptr %2267, i64 %2247
  %2269 = load <2 x double>, ptr %2268, align 16, !tbaa !26
  %2270 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2266, <2 x double> %2269, <2 x double> %2265)
  %2271 = fmul <2 x double> %2270, splat (double 5.000000e-01)
  %2272 = icmp eq i64 %2246, 1
  br i1 %2272, label %2288, label %2273

2273:                                             ; preds = %2240
  %2274 = load <2 x double>, ptr %2235, align 16, !tbaa !26
  %2275 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2271, <2 x double> %2274, <2 x double> %2236)
  %2276 = load <2 x double>, ptr %1835, align 16, !tbaa !26
  %2277 = fmul <2 x double> %2218, %2276
  %2278 = load <2 x double>, ptr %1779, align 16, !tbaa !26
  %2279 = load <2 x double>, ptr %1781, align 16, !tbaa !26
  %2280 = load <2 x double>, ptr %1783, align 16, !tbaa !26
  %2281 = load <2 x double>, ptr %1785, align 16, !tbaa !26
  %2282 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2251, <2 x double> %2281, <2 x double> %2280)
  %2283 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2251, <2 x double> %2282, <2 x double> %2279)
  %2284 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2251, <2 x double> %2283, <2 x double> %2278)
  %2285 = fmul <2 x double> %2277, %2284
  %2286 = fsub <2 x double> %2285, %2275
  %2287 = fadd <2 x double> %2275, %2285
  br label %2294

2288:                                             ; preds = %2240
  %2289 = load <2 x double>, ptr %1886, align 16, !tbaa !26
  %2290 = load <2 x double>, ptr %2235, align 16, !tbaa !26
  %2291 = fmul <2 x double> %2271, splat (double -2.000000e+00)
  %2292 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2291, <2 x double> %2290, <2 x double> %2289)
  %2293 = fadd <2 x double> %2213, %2292
  br label %2294

2294:                                             ; preds = %2288, %2273
  %2295 = phi <2 x double> [ %2274, %2273 ], [ %2290, %2288 ]
  %2296 = phi <2 x double> [ %2286, %2273 ], [ %2293, %2288 ]
  %2297 = phi <2 x double> [ %2287, %2273 ], [ %2289, %2288 ]
  %2298 = fsub <2 x double> %2245, %2258
  %2299 = fmul <2 x double> %2259, %2298
  %2300 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2299, <2 x double> %2295, <2 x double> %2241)
  %2301 = fadd <2 x double> %2297, %2300
  %2302 = fneg <2 x double> %2242
  %2303 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2302, <2 x double> %2244, <2 x double> %2301)
  %2304 = fdiv <2 x double> splat (double 1.000000e+00), %2303
  %2305 = load ptr, ptr %2224, align 16, !tbaa !89
  %2306 = getelementptr inbounds nuw <2 x double>, ptr %2305, i64 %2247
  store <2 x double> %2258, ptr %2306, align 16, !tbaa !26
  %2307 = load ptr, ptr %2237, align 8, !tbaa !64
  %2308 = getelementptr inbounds nuw <2 x double>, ptr %2307, i64 %2247
  %2309 = load <2 x double>, ptr %2308, align 16, !tbaa !26
  %2310 = fneg <2 x double> %2309
  %2311 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2242, <2 x double> %2243, <2 x double> %2310)
  %2312 = fmul <2 x double> %2304, %2311
  %2313 = load ptr, ptr %2238, align 16, !tbaa !91
  %2314 = getelementptr inbounds nuw <2 x double>, ptr %2313, i64 %2247
  store <2 x double> %2312, ptr %2314, align 16, !tbaa !26
  %2315 = fmul <2 x double> %2296, %2304
  %2316 = load ptr, ptr %2239, align 8, !tbaa !92
  %2317 = getelementptr inbounds nuw <2 x double>, ptr %2316, i64 %2247
  store <2 x double> %2315, ptr %2317, align 16, !tbaa !26
  %2318 = icmp samesign ugt i64 %2246, 1
  br i1 %2318, label %2240, label %2319, !llvm.loop !93

2319:                                             ; preds = %2294, %2208
  %2320 = load <2 x i64>, ptr %1739, align 16, !tbaa !26
  %2321 = load <2 x double>, ptr %1886, align 16, !tbaa !26
  %2322 = getelementptr inbounds nuw i8, ptr %1521, i64 2304
  %2323 = load ptr, ptr %2322, align 16, !tbaa !91
  %2324 = load <2 x double>, ptr %2323, align 16, !tbaa !26
  %2325 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2321, <2 x double> %2324, <2 x double> %2178)
  %2326 = icmp eq <2 x i64> %2320, zeroinitializer
  %2327 = select <2 x i1> %2326, <2 x double> %2185, <2 x double> %2325
  %2328 = getelementptr inbounds nuw i8, ptr %1521, i64 1552
  store <2 x double> %2327, ptr %2328, align 16, !tbaa !26
  %2329 = getelementptr inbounds nuw i8, ptr %1521, i64 2312
  %2330 = load ptr, ptr %2329, align 8, !tbaa !92
  %2331 = load <2 x double>, ptr %2330, align 16, !tbaa !26
  %2332 = fsub <2 x double> splat (double 1.000000e+00), %2331
  %2333 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2321, <2 x double> %2332, <2 x double> %2180)
  %2334 = select <2 x i1> %2326, <2 x double> %2188, <2 x double> %2333
  br label %2335

2335:                                             ; preds = %2199, %2319
  %2336 = phi <2 x double> [ %2188, %2199 ], [ %2334, %2319 ]
  %2337 = getelementptr inbounds nuw i8, ptr %1521, i64 1568
  store <2 x double> %2336, ptr %2337, align 16, !tbaa !26
  %2338 = add nuw nsw i64 %1519, 1
  %2339 = load i64, ptr %170, align 8, !tbaa !20
  %2340 = icmp slt i64 %2338, %2339
  br i1 %2340, label %1518, label %1515, !llvm.loop !94

2341:                                             ; preds = %2455, %1506, %1515
  %2342 = phi <2 x double> [ %1507, %1506 ], [ %1516, %1515 ], [ %1516, %2455 ]
  %2343 = fcmp ogt <2 x double> %2342, zeroinitializer
  %2344 = bitcast <2 x i1> %2343 to i2
  %2345 = icmp eq i2 %2344, 0
  br i1 %2345, label %2462, label %2459

2346:                                             ; preds = %1515, %2455
  %2347 = phi i64 [ %2456, %2455 ], [ %2339, %1515 ]
  %2348 = phi i64 [ %2457, %2455 ], [ 0, %1515 ]
  %2349 = load ptr, ptr %143, align 8, !tbaa !28
  %2350 = getelementptr inbounds nuw %struct.Piece, ptr %2349, i64 %2348
  %2351 = getelementptr inbounds nuw i8, ptr %2350, i64 2112
  %2352 = load <2 x i64>, ptr %2351, align 16, !tbaa !26
  %2353 = getelementptr inbounds nuw i8, ptr %2350, i64 560
  %2354 = load <2 x double>, ptr %2353, align 16, !tbaa !26
  %2355 = fcmp ogt <2 x double> %2354, zeroinitializer
  %2356 = select <2 x i1> %2355, <2 x i64> %2352, <2 x i64> zeroinitializer
  %2357 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2356)
  %2358 = icmp eq i64 %2357, 0
  br i1 %2358, label %2455, label %2359

2359:                                             ; preds = %2346
  %2360 = load <2 x double>, ptr %2350, align 16, !tbaa !26
  %2361 = getelementptr inbounds nuw i8, ptr %2350, i64 736
  %2362 = load <2 x double>, ptr %2361, align 16, !tbaa !26
  %2363 = fsub <2 x double> %2360, %2362
  %2364 = getelementptr inbounds nuw i8, ptr %2350, i64 1824
  %2365 = load <2 x double>, ptr %2364, align 16, !tbaa !26
  %2366 = fsub <2 x double> splat (double 1.000000e+00), %2365
  %2367 = getelementptr inbounds nuw i8, ptr %2350, i64 480
  %2368 = load <2 x double>, ptr %2367, align 16, !tbaa !26
  %2369 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2366, <2 x double> %2368, <2 x double> %2363)
  %2370 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %2371 = fdiv <2 x double> splat (double 1.000000e+00), %2370
  %2372 = fcmp ogt <2 x double> %2354, splat (double 1.000000e-30)
  %2373 = select <2 x i1> %2372, <2 x double> %2354, <2 x double> splat (double 1.000000e-30)
  %2374 = fdiv <2 x double> %2369, %2373
  %2375 = fadd <2 x double> %2371, %2374
  %2376 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %2377 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2376, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2378 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2376, <2 x double> %2377, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2379 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %2380 = getelementptr inbounds nuw i8, ptr %2350, i64 1552
  %2381 = load <2 x double>, ptr %2380, align 16, !tbaa !26
  %2382 = getelementptr inbounds nuw i8, ptr %2350, i64 1568
  %2383 = load <2 x double>, ptr %2382, align 16, !tbaa !26
  %2384 = fdiv <2 x double> %2381, %2383
  %2385 = fcmp olt <2 x double> %2384, %2376
  %2386 = select <2 x i1> %2385, <2 x double> %2384, <2 x double> %2376
  %2387 = getelementptr inbounds nuw i8, ptr %2350, i64 896
  %2388 = load <2 x double>, ptr %2387, align 16, !tbaa !26
  %2389 = fcmp olt <2 x double> %2388, %2386
  %2390 = select <2 x i1> %2389, <2 x double> %2388, <2 x double> %2386
  %2391 = fneg <2 x double> %2383
  br label %2395

2392:                                             ; preds = %2395
  %2393 = getelementptr inbounds nuw i8, ptr %2350, i64 1584
  store <2 x double> %2446, ptr %2393, align 16, !tbaa !26
  %2394 = load i64, ptr %170, align 8, !tbaa !20
  br label %2455

2395:                                             ; preds = %2359, %2395
  %2396 = phi <2 x i64> [ %2356, %2359 ], [ %2449, %2395 ]
  %2397 = phi i32 [ 0, %2359 ], [ %2450, %2395 ]
  %2398 = phi <2 x double> [ %2390, %2359 ], [ %2446, %2395 ]
  %2399 = fadd <2 x double> %2398, splat (double 2.731500e+02)
  %2400 = fcmp ogt <2 x double> %2398, zeroinitializer
  %2401 = select <2 x i1> %2400, <2 x double> %2398, <2 x double> zeroinitializer
  %2402 = fadd <2 x double> %2401, splat (double 2.731500e+02)
  %2403 = fadd <2 x double> %2402, splat (double 0xC08451671D164BD4)
  %2404 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %2403
  %2405 = fsub <2 x double> %2402, %2404
  %2406 = fadd <2 x double> %2405, splat (double 0x40923C3565924845)
  %2407 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2405, <2 x double> %2406, <2 x double> splat (double 0xC12619EA558539E6))
  %2408 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2405, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %2409 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2405, <2 x double> %2408, <2 x double> splat (double 0xC148A99584203885))
  %2410 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2405, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %2411 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2405, <2 x double> %2410, <2 x double> splat (double 0x4118B9E59F2691E5))
  %2412 = fmul <2 x double> %2411, splat (double 2.000000e+00)
  %2413 = fmul <2 x double> %2407, splat (double 4.000000e+00)
  %2414 = fneg <2 x double> %2411
  %2415 = fmul <2 x double> %2413, %2414
  %2416 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2409, <2 x double> %2409, <2 x double> %2415)
  %2417 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2416)
  %2418 = fsub <2 x double> %2417, %2409
  %2419 = fdiv <2 x double> %2412, %2418
  %2420 = fmul <2 x double> %2419, %2419
  %2421 = fmul <2 x double> %2420, splat (double 1.000000e+06)
  %2422 = fmul <2 x double> %2420, %2421
  %2423 = fmul <2 x double> %2399, splat (double 4.615260e+02)
  %2424 = fdiv <2 x double> %2422, %2423
  %2425 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2391, <2 x double> %2398, <2 x double> %2381)
  %2426 = fsub <2 x double> %2424, %2379
  %2427 = fcmp ogt <2 x double> %2426, zeroinitializer
  %2428 = select <2 x i1> %2427, <2 x double> %2426, <2 x double> zeroinitializer
  %2429 = fmul <2 x double> %2378, %2428
  %2430 = fdiv <2 x double> %2429, %2375
  %2431 = fsub <2 x double> %2425, %2430
  %2432 = fmul <2 x double> %2378, %2424
  %2433 = fdiv <2 x double> %2378, %2423
  %2434 = fadd <2 x double> %2433, splat (double -1.000000e+00)
  %2435 = fmul <2 x double> %2434, %2432
  %2436 = fdiv <2 x double> %2435, %2399
  %2437 = fdiv <2 x double> %2436, %2375
  %2438 = fcmp ule <2 x double> %2424, %2379
  %2439 = select <2 x i1> %2438, <2 x double> zeroinitializer, <2 x double> %2437
  %2440 = fsub <2 x double> %2391, %2439
  %2441 = fdiv <2 x double> %2431, %2440
  %2442 = fsub <2 x double> %2398, %2441
  %2443 = fcmp olt <2 x double> %2442, %2386
  %2444 = select <2 x i1> %2443, <2 x double> %2442, <2 x double> %2386
  %2445 = icmp eq <2 x i64> %2396, zeroinitializer
  %2446 = select <2 x i1> %2445, <2 x double> %2398, <2 x double> %2444
  %2447 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2441)
  %2448 = fcmp oge <2 x double> %2447, splat (double 1.000000e-05)
  %2449 = select <2 x i1> %2448, <2 x i64> %2396, <2 x i64> zeroinitializer
  %2450 = add nuw nsw i32 %2397, 1
  %2451 = icmp samesign ult i32 %2397, 7
  %2452 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2449)
  %2453 = icmp ne i64 %2452, 0
  %2454 = select i1 %2451, i1 %2453, i1 false
  br i1 %2454, label %2395, label %2392, !llvm.loop !95

2455:                                             ; preds = %2346, %2392
  %2456 = phi i64 [ %2347, %2346 ], [ %2394, %2392 ]
  %2457 = add nuw nsw i64 %2348, 1
  %2458 = icmp slt i64 %2457, %2456
  br i1 %2458, label %2346, label %2341, !llvm.loop !96

2459:                                             ; preds = %2341
  %2460 = sext <2 x i1> %2343 to <2 x i64>
  %2461 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1, <2 x i64> noundef %2460) #7
  br label %2462

2462:                                             ; preds = %2341, %2459
  %2463 = phi <2 x double> [ %2461, %2459 ], [ zeroinitializer, %2341 ]
  %2464 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %2465 = fcmp ogt <2 x double> %2464, zeroinitializer
  %2466 = sext <2 x i1> %2465 to <2 x i64>
  %2467 = xor <2 x i64> %2466, splat (i64 -1)
  %2468 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %2469 = fcmp oeq <2 x double> %2468, splat (double 1.000000e+00)
  %2470 = fcmp oeq <2 x double> %2468, splat (double 2.000000e+00)
  %2471 = or <2 x i1> %2469, %2470
  %2472 = select <2 x i1> %2471, <2 x i64> %2467, <2 x i64> zeroinitializer
  %2473 = xor <2 x i64> %2472, %2466
  %2474 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %2475 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %2476 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %2477 = icmp eq <2 x i64> %2473, splat (i64 -1)
  %2478 = select <2 x i1> %2477, <2 x double> %2476, <2 x double> %2475
  %2479 = bitcast <2 x i1> %2465 to i2
  %2480 = icmp eq i2 %2479, 0
  br i1 %2480, label %2512, label %2481

2481:                                             ; preds = %2462
  %2482 = select <2 x i1> %2465, <2 x double> %2463, <2 x double> %2478
  %2483 = fmul <2 x double> %2482, splat (double 0x3EB0C6F7A0B5ED8D)
  %2484 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2483)
  %2485 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2484)
  %2486 = fmul <2 x double> %2485, %2485
  %2487 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2485, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2486)
  %2488 = fadd <2 x double> %2487, splat (double 0x402DD4891DBECC6B)
  %2489 = fmul <2 x double> %2485, splat (double 0x40C77A698FD9BCCA)
  %2490 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2486, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2489)
  %2491 = fadd <2 x double> %2490, splat (double 0xC0B2D7440748F0B3)
  %2492 = fmul <2 x double> %2485, splat (double 0xC148A99584203885)
  %2493 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2486, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2492)
  %2494 = fadd <2 x double> %2493, splat (double 0x4118B9E59F2691E5)
  %2495 = fmul <2 x double> %2494, splat (double 2.000000e+00)
  %2496 = fneg <2 x double> %2491
  %2497 = fmul <2 x double> %2488, splat (double 4.000000e+00)
  %2498 = fneg <2 x double> %2494
  %2499 = fmul <2 x double> %2497, %2498
  %2500 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2491, <2 x double> %2491, <2 x double> %2499)
  %2501 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2500)
  %2502 = fsub <2 x double> %2496, %2501
  %2503 = fdiv <2 x double> %2495, %2502
  %2504 = fadd <2 x double> %2503, splat (double 0x408451671D164BD4)
  %2505 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2503, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2506 = fmul <2 x double> %2505, splat (double -4.000000e+00)
  %2507 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2504, <2 x double> %2504, <2 x double> %2506)
  %2508 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2507)
  %2509 = fsub <2 x double> %2504, %2508
  %2510 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2509, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2511 = select <2 x i1> %2465, <2 x double> %2510, <2 x double> %2474
  br label %2512

2512:                                             ; preds = %2481, %2462
  %2513 = phi <2 x double> [ %2482, %2481 ], [ %2478, %2462 ]
  %2514 = phi <2 x double> [ %2511, %2481 ], [ %2474, %2462 ]
  %2515 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %2516 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %2517 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %2518 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %2519 = fmul <2 x double> %2517, %2518
  %2520 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2515, <2 x double> %2516, <2 x double> %2519)
  %2521 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %2522 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %2523 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2524 = fneg <2 x double> %2520
  %2525 = fmul <2 x double> %2523, %2524
  %2526 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2521, <2 x double> %2522, <2 x double> %2525)
  %2527 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %2528 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2523, <2 x double> %2527, <2 x double> %2521)
  %2529 = fdiv <2 x double> %2526, %2528
  %2530 = load <2 x double>, ptr %195, align 16, !tbaa !26
  %2531 = select <2 x i1> %2477, <2 x double> %2530, <2 x double> %2475
  store <2 x double> %2531, ptr %195, align 16, !tbaa !26
  %2532 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %2533 = select <2 x i1> %2477, <2 x double> %2532, <2 x double> %2529
  store <2 x double> %2533, ptr %196, align 16, !tbaa !26
  store <2 x double> %2513, ptr %189, align 16, !tbaa !26
  %2534 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %2535 = and <2 x i64> %2534, %2472
  %2536 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2535)
  %2537 = icmp eq i64 %2536, 0
  br i1 %2537, label %3104, label %2538

2538:                                             ; preds = %2512
  %2539 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %2540 = load <2 x double>, ptr %198, align 16, !tbaa !26
  %2541 = fmul <2 x double> %2517, %2540
  %2542 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2515, <2 x double> %2539, <2 x double> %2541)
  %2543 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2544 = load <2 x double>, ptr %200, align 16, !tbaa !26
  %2545 = fdiv <2 x double> %2543, %2544
  %2546 = fmul <2 x double> %2475, splat (double 3.000000e-01)
  %2547 = load <2 x double>, ptr %201, align 16, !tbaa !26
  %2548 = fadd <2 x double> %2475, %2547
  %2549 = fadd <2 x double> %2548, splat (double 2.000000e+05)
  %2550 = fmul <2 x double> %2544, splat (double 2.870530e+02)
  %2551 = fdiv <2 x double> %2475, %2550
  %2552 = fcmp ogt <2 x double> %2513, %2546
  %2553 = select <2 x i1> %2552, <2 x double> %2513, <2 x double> %2546
  %2554 = fcmp olt <2 x double> %2553, %2549
  %2555 = select <2 x i1> %2554, <2 x double> %2553, <2 x double> %2549
  %2556 = icmp eq <2 x i64> %2472, zeroinitializer
  %2557 = select <2 x i1> %2556, <2 x double> %2513, <2 x double> %2555
  %2558 = fdiv <2 x double> %2531, splat (double 2.870530e+02)
  %2559 = fmul <2 x double> %2551, splat (double 2.000000e+00)
  %2560 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2559)
  br label %2561

2561:                                             ; preds = %2886, %2538
  %2562 = phi <2 x double> [ %2514, %2538 ], [ %2596, %2886 ]
  %2563 = phi <2 x double> [ %2546, %2538 ], [ %3043, %2886 ]
  %2564 = phi <2 x double> [ %2549, %2538 ], [ %3040, %2886 ]
  %2565 = phi <2 x i64> [ %2535, %2538 ], [ %3059, %2886 ]
  %2566 = phi i32 [ 0, %2538 ], [ %3064, %2886 ]
  %2567 = phi <2 x double> [ %2557, %2538 ], [ %3061, %2886 ]
  %2568 = fmul <2 x double> %2567, splat (double 0x3EB0C6F7A0B5ED8D)
  %2569 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2568)
  %2570 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2569)
  %2571 = fmul <2 x double> %2570, %2570
  %2572 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2570, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2571)
  %2573 = fadd <2 x double> %2572, splat (double 0x402DD4891DBECC6B)
  %2574 = fmul <2 x double> %2570, splat (double 0x40C77A698FD9BCCA)
  %2575 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2571, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2574)
  %2576 = fadd <2 x double> %2575, splat (double 0xC0B2D7440748F0B3)
  %2577 = fmul <2 x double> %2570, splat (double 0xC148A99584203885)
  %2578 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2571, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2577)
  %2579 = fadd <2 x double> %2578, splat (double 0x4118B9E59F2691E5)
  %2580 = fmul <2 x double> %2579, splat (double 2.000000e+00)
  %2581 = fneg <2 x double> %2576
  %2582 = fmul <2 x double> %2573, splat (double 4.000000e+00)
  %2583 = fneg <2 x double> %2579
  %2584 = fmul <2 x double> %2582, %2583
  %2585 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2576, <2 x double> %2576, <2 x double> %2584)
  %2586 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2585)
  %2587 = fsub <2 x double> %2581, %2586
  %2588 = fdiv <2 x double> %2580, %2587
  %2589 = fadd <2 x double> %2588, splat (double 0x408451671D164BD4)
  %2590 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2588, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2591 = fmul <2 x double> %2590, splat (double -4.000000e+00)
  %2592 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2589, <2 x double> %2589, <2 x double> %2591)
  %2593 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2592)
  %2594 = fsub <2 x double> %2589, %2593
  %2595 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2594, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2596 = select <2 x i1> %2556, <2 x double> %2562, <2 x double> %2595
  %2597 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2596, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2598 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2596, <2 x double> %2597, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2599 = load i64, ptr %170, align 8, !tbaa !20, !noalias !97
  %2600 = icmp sgt i64 %2599, 0
  br i1 %2600, label %2601, label %2886

2601:                                             ; preds = %2561
  %2602 = fdiv <2 x double> splat (double 1.000000e+00), %2598
  br label %2603

2603:                                             ; preds = %2601, %2872
  %2604 = phi <2 x double> [ zeroinitializer, %2601 ], [ %2882, %2872 ]
  %2605 = phi <2 x double> [ zeroinitializer, %2601 ], [ %2881, %2872 ]
  %2606 = phi i64 [ 0, %2601 ], [ %2883, %2872 ]
  %2607 = load ptr, ptr %143, align 8, !tbaa !28, !noalias !97
  %2608 = getelementptr inbounds nuw %struct.Piece, ptr %2607, i64 %2606
  %2609 = getelementptr inbounds nuw i8, ptr %2608, i64 1552
  %2610 = load <2 x double>, ptr %2609, align 16, !tbaa !26, !noalias !97
  %2611 = getelementptr inbounds nuw i8, ptr %2608, i64 1568
  %2612 = load <2 x double>, ptr %2611, align 16, !tbaa !26, !noalias !97
  %2613 = getelementptr inbounds nuw i8, ptr %2608, i64 1904
  %2614 = load <2 x double>, ptr %2613, align 16, !tbaa !26, !noalias !97
  %2615 = fcmp ule <2 x double> %2614, splat (double 1.000000e+00)
  %2616 = fmul <2 x double> %2596, %2612
  %2617 = fcmp ogt <2 x double> %2610, %2616
  %2618 = and <2 x i1> %2615, %2617
  %2619 = fneg <2 x double> %2612
  %2620 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2619, <2 x double> %2596, <2 x double> %2610)
  %2621 = fmul <2 x double> %2602, %2620
  %2622 = select <2 x i1> %2618, <2 x double> %2621, <2 x double> zeroinitializer
  %2623 = fmul <2 x double> %2602, %2619
  %2624 = select <2 x i1> %2618, <2 x double> %2623, <2 x double> zeroinitializer
  %2625 = xor <2 x i1> %2618, splat (i1 true)
  %2626 = bitcast <2 x i1> %2625 to i2
  %2627 = icmp eq i2 %2626, 0
  %2628 = fdiv <2 x double> %2610, %2612
  %2629 = select <2 x i1> %2618, <2 x double> %2596, <2 x double> %2628
  %2630 = select i1 %2627, <2 x double> %2596, <2 x double> %2629
  %2631 = getelementptr inbounds nuw i8, ptr %2608, i64 2112
  %2632 = load <2 x i64>, ptr %2631, align 16, !tbaa !26, !noalias !97
  %2633 = getelementptr inbounds nuw i8, ptr %2608, i64 560
  %2634 = load <2 x double>, ptr %2633, align 16, !tbaa !26, !noalias !97
  %2635 = fcmp ogt <2 x double> %2634, zeroinitializer
  %2636 = select <2 x i1> %2615, <2 x i1> %2635, <2 x i1> zeroinitializer
  %2637 = select <2 x i1> %2636, <2 x i64> %2632, <2 x i64> zeroinitializer
  %2638 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2637)
  %2639 = icmp eq i64 %2638, 0
  br i1 %2639, label %2651, label %2640

2640:                                             ; preds = %2603
  %2641 = getelementptr inbounds nuw i8, ptr %2608, i64 1584
  %2642 = load <2 x double>, ptr %2641, align 16, !tbaa !26, !noalias !97
  %2643 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2619, <2 x double> %2642, <2 x double> %2610)
  %2644 = fcmp ogt <2 x double> %2643, zeroinitializer
  %2645 = select <2 x i1> %2644, <2 x double> %2643, <2 x double> zeroinitializer
  %2646 = fmul <2 x double> %2602, %2645
  %2647 = icmp eq <2 x i64> %2637, zeroinitializer
  %2648 = select <2 x i1> %2647, <2 x double> %2622, <2 x double> %2646
  %2649 = select <2 x i1> %2647, <2 x double> %2630, <2 x double> %2642
  %2650 = select <2 x i1> %2647, <2 x double> %2624, <2 x double> zeroinitializer
  br label %2651

2651:                                             ; preds = %2640, %2603
  %2652 = phi <2 x double> [ %2649, %2640 ], [ %2630, %2603 ]
  %2653 = phi <2 x double> [ %2650, %2640 ], [ %2624, %2603 ]
  %2654 = phi <2 x double> [ %2648, %2640 ], [ %2622, %2603 ]
  %2655 = getelementptr inbounds nuw i8, ptr %2608, i64 1504
  store <2 x double> %2654, ptr %2655, align 16, !tbaa !26, !noalias !97
  %2656 = getelementptr inbounds nuw i8, ptr %2608, i64 1488
  store <2 x double> %2652, ptr %2656, align 16, !tbaa !26, !noalias !97
  %2657 = getelementptr inbounds nuw i8, ptr %2608, i64 1520
  store <2 x double> zeroinitializer, ptr %2657, align 16, !tbaa !26, !noalias !97
  %2658 = load i64, ptr %132, align 16, !tbaa !21, !noalias !97
  %2659 = sitofp i64 %2658 to double
  %2660 = insertelement <2 x double> poison, double %2659, i64 0
  %2661 = shufflevector <2 x double> %2660, <2 x double> poison, <2 x i32> zeroinitializer
  %2662 = getelementptr inbounds nuw i8, ptr %2608, i64 1536
  store <2 x double> %2661, ptr %2662, align 16, !tbaa !26, !noalias !97
  %2663 = getelementptr inbounds nuw i8, ptr %2608, i64 1968
  %2664 = getelementptr inbounds nuw i8, ptr %2608, i64 2032
  %2665 = load <2 x double>, ptr %2664, align 16, !tbaa !26, !noalias !100
  %2666 = fcmp ole <2 x double> %2596, %2665
  %2667 = getelementptr inbounds nuw i8, ptr %2608, i64 2048
  %2668 = load <2 x double>, ptr %2667, align 16, !tbaa !26, !noalias !100
  %2669 = fcmp oge <2 x double> %2596, %2668
  %2670 = or <2 x i1> %2666, %2669
  %2671 = bitcast <2 x i1> %2670 to i2
  %2672 = icmp eq i2 %2671, 0
  br i1 %2672, label %2673, label %2676

2673:                                             ; preds = %2651
  %2674 = getelementptr inbounds nuw i8, ptr %2608, i64 2000
  %2675 = load <2 x double>, ptr %2674, align 16, !tbaa !26, !noalias !100
  br label %2798

2676:                                             ; preds = %2651
  %2677 = load i64, ptr %132, align 16, !tbaa !21, !noalias !103
  %2678 = sitofp i64 %2677 to double
  %2679 = insertelement <2 x double> poison, double %2678, i64 0
  %2680 = shufflevector <2 x double> %2679, <2 x double> poison, <2 x i32> zeroinitializer
  %2681 = icmp sgt i64 %2677, 0
  br i1 %2681, label %2682, label %2773

2682:                                             ; preds = %2676
  %2683 = sext <2 x i1> %2670 to <2 x i64>
  %2684 = getelementptr inbounds nuw i8, ptr %2608, i64 2200
  %2685 = load ptr, ptr %2684, align 8, !tbaa !85, !noalias !103
  %2686 = getelementptr inbounds nuw i8, ptr %2608, i64 2208
  %2687 = load ptr, ptr %2686, align 16, !tbaa !86, !noalias !103
  %2688 = getelementptr inbounds nuw i8, ptr %2608, i64 2128
  %2689 = load i64, ptr %2688, align 16, !tbaa !31, !noalias !103
  %2690 = getelementptr inbounds nuw i8, ptr %2608, i64 2224
  %2691 = getelementptr inbounds nuw i8, ptr %2608, i64 2216
  %2692 = getelementptr inbounds nuw i8, ptr %2608, i64 2232
  br label %2693

2693:                                             ; preds = %2682, %2741
  %2694 = phi <2 x i64> [ %2683, %2682 ], [ %2713, %2741 ]
  %2695 = phi i64 [ %2677, %2682 ], [ %2703, %2741 ]
  %2696 = phi <2 x double> [ splat (double 1.000000e+09), %2682 ], [ %2756, %2741 ]
  %2697 = phi <2 x double> [ zeroinitializer, %2682 ], [ %2760, %2741 ]
  %2698 = phi <2 x double> [ splat (double 1.000000e+09), %2682 ], [ %2738, %2741 ]
  %2699 = phi <2 x double> [ splat (double 1.000000e+00), %2682 ], [ %2737, %2741 ]
  %2700 = phi <2 x double> [ %2680, %2682 ], [ %2764, %2741 ]
  %2701 = phi <2 x double> [ zeroinitializer, %2682 ], [ %2753, %2741 ]
  %2702 = phi <2 x double> [ zeroinitializer, %2682 ], [ %2751, %2741 ]
  %2703 = add nsw i64 %2695, -1
  %2704 = getelementptr inbounds nuw <2 x double>, ptr %2685, i64 %2703
  %2705 = load <2 x double>, ptr %2704, align 16, !tbaa !26, !noalias !103
  %2706 = getelementptr inbounds nuw <2 x double>, ptr %2687, i64 %2703
  %2707 = load <2 x double>, ptr %2706, align 16, !tbaa !26, !noalias !103
  %2708 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2707, <2 x double> %2596, <2 x double> %2705)
  %2709 = fsub <2 x double> %2708, %2596
  %2710 = fcmp ogt <2 x double> %2709, splat (double 1.000000e-09)
  %2711 = select <2 x i1> %2710, <2 x i64> %2694, <2 x i64> zeroinitializer
  %2712 = icmp sgt i64 %2695, %2689
  %2713 = select i1 %2712, <2 x i64> %2711, <2 x i64> zeroinitializer
  %2714 = icmp slt i64 %2695, %2677
  br i1 %2714, label %2715, label %2727

2715:                                             ; preds = %2693
  %2716 = load ptr, ptr %2690, align 16, !tbaa !83, !noalias !103
  %2717 = getelementptr inbounds nuw <2 x double>, ptr %2716, i64 %2695
  %2718 = load <2 x double>, ptr %2717, align 16, !tbaa !26, !noalias !103
  %2719 = fmul <2 x double> %2709, %2718
  %2720 = icmp eq <2 x i64> %2713, %2694
  %2721 = select <2 x i1> %2720, <2 x double> zeroinitializer, <2 x double> %2719
  %2722 = fadd <2 x double> %2702, %2721
  %2723 = fadd <2 x double> %2707, splat (double -1.000000e+00)
  %2724 = fmul <2 x double> %2723, %2718
  %2725 = select <2 x i1> %2720, <2 x double> zeroinitializer, <2 x double> %2724
  %2726 = fadd <2 x double> %2701, %2725
  br label %2727

2727:                                             ; preds = %2715, %2693
  %2728 = phi <2 x double> [ %2722, %2715 ], [ %2702, %2693 ]
  %2729 = phi <2 x double> [ %2726, %2715 ], [ %2701, %2693 ]
  br i1 %2712, label %2730, label %2736

2730:                                             ; preds = %2727
  %2731 = fneg <2 x double> %2709
  %2732 = icmp eq <2 x i64> %2713, %2694
  %2733 = select <2 x i1> %2732, <2 x double> %2698, <2 x double> %2731
  %2734 = fsub <2 x double> splat (double 1.000000e+00), %2707
  %2735 = select <2 x i1> %2732, <2 x double> %2699, <2 x double> %2734
  br label %2736

2736:                                             ; preds = %2730, %2727
  %2737 = phi <2 x double> [ %2735, %2730 ], [ %2699, %2727 ]
  %2738 = phi <2 x double> [ %2733, %2730 ], [ %2698, %2727 ]
  %2739 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2713)
  %2740 = icmp eq i64 %2739, 0
  br i1 %2740, label %2766, label %2741

2741:                                             ; preds = %2736
  %2742 = load ptr, ptr %2691, align 8, !tbaa !82, !noalias !103
  %2743 = getelementptr inbounds nuw <2 x double>, ptr %2742, i64 %2703
  %2744 = load <2 x double>, ptr %2743, align 16, !tbaa !26, !noalias !103
  %2745 = load ptr, ptr %2692, align 8, !tbaa !84, !noalias !103
  %2746 = getelementptr inbounds nuw <2 x double>, ptr %2745, i64 %2703
  %2747 = load <2 x double>, ptr %2746, align 16, !tbaa !26, !noalias !103
  %2748 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2747, <2 x double> %2596, <2 x double> %2744)
  %2749 = icmp eq <2 x i64> %2713, zeroinitializer
  %2750 = select <2 x i1> %2749, <2 x double> zeroinitializer, <2 x double> %2748
  %2751 = fadd <2 x double> %2728, %2750
  %2752 = select <2 x i1> %2749, <2 x double> zeroinitializer, <2 x double> %2747
  %2753 = fadd <2 x double> %2729, %2752
  %2754 = fcmp olt <2 x double> %2696, %2709
  %2755 = select <2 x i1> %2749, <2 x i1> splat (i1 true), <2 x i1> %2754
  %2756 = select <2 x i1> %2755, <2 x double> %2696, <2 x double> %2709
  %2757 = fsub <2 x double> splat (double 1.000000e+00), %2707
  %2758 = fcmp ogt <2 x double> %2697, %2757
  %2759 = select <2 x i1> %2749, <2 x i1> splat (i1 true), <2 x i1> %2758
  %2760 = select <2 x i1> %2759, <2 x double> %2697, <2 x double> %2757
  %2761 = uitofp nneg i64 %2703 to double
  %2762 = insertelement <2 x double> poison, double %2761, i64 0
  %2763 = shufflevector <2 x double> %2762, <2 x double> poison, <2 x i32> zeroinitializer
  %2764 = select <2 x i1> %2749, <2 x double> %2700, <2 x double> %2763
  %2765 = icmp samesign ugt i64 %2695, 1
  br i1 %2765, label %2693, label %2766, !llvm.loop !106

2766:                                             ; preds = %2736, %2741
  %2767 = phi <2 x double> [ %2764, %2741 ], [ %2700, %2736 ]
  %2768 = phi <2 x double> [ %2760, %2741 ], [ %2697, %2736 ]
  %2769 = phi <2 x double> [ %2756, %2741 ], [ %2696, %2736 ]
  %2770 = phi <2 x double> [ %2751, %2741 ], [ %2728, %2736 ]
  %2771 = phi <2 x double> [ %2753, %2741 ], [ %2729, %2736 ]
  %2772 = fdiv <2 x double> %2738, %2737
  br label %2773

2773:                                             ; preds = %2766, %2676
  %2774 = phi <2 x double> [ %2680, %2676 ], [ %2767, %2766 ]
  %2775 = phi <2 x double> [ zeroinitializer, %2676 ], [ %2768, %2766 ]
  %2776 = phi <2 x double> [ splat (double 1.000000e+09), %2676 ], [ %2769, %2766 ]
  %2777 = phi <2 x double> [ zeroinitializer, %2676 ], [ %2770, %2766 ]
  %2778 = phi <2 x double> [ zeroinitializer, %2676 ], [ %2771, %2766 ]
  %2779 = phi <2 x double> [ splat (double 1.000000e+09), %2676 ], [ %2772, %2766 ]
  %2780 = fsub <2 x double> %2596, %2779
  %2781 = fcmp ogt <2 x double> %2775, splat (double 1.000000e-09)
  %2782 = select <2 x i1> %2781, <2 x double> %2775, <2 x double> splat (double 1.000000e-09)
  %2783 = fdiv <2 x double> %2776, %2782
  %2784 = fadd <2 x double> %2596, %2783
  %2785 = load <2 x double>, ptr %2663, align 16, !tbaa !26, !noalias !100
  %2786 = select <2 x i1> %2670, <2 x double> %2777, <2 x double> %2785
  store <2 x double> %2786, ptr %2663, align 16, !tbaa !26, !noalias !100
  %2787 = getelementptr inbounds nuw i8, ptr %2608, i64 1984
  %2788 = load <2 x double>, ptr %2787, align 16, !tbaa !26, !noalias !100
  %2789 = select <2 x i1> %2670, <2 x double> %2778, <2 x double> %2788
  store <2 x double> %2789, ptr %2787, align 16, !tbaa !26, !noalias !100
  %2790 = getelementptr inbounds nuw i8, ptr %2608, i64 2000
  %2791 = load <2 x double>, ptr %2790, align 16, !tbaa !26, !noalias !100
  %2792 = select <2 x i1> %2670, <2 x double> %2774, <2 x double> %2791
  store <2 x double> %2792, ptr %2790, align 16, !tbaa !26, !noalias !100
  %2793 = getelementptr inbounds nuw i8, ptr %2608, i64 2016
  %2794 = load <2 x double>, ptr %2793, align 16, !tbaa !26, !noalias !100
  %2795 = select <2 x i1> %2670, <2 x double> %2596, <2 x double> %2794
  store <2 x double> %2795, ptr %2793, align 16, !tbaa !26, !noalias !100
  %2796 = select <2 x i1> %2670, <2 x double> %2780, <2 x double> %2665
  store <2 x double> %2796, ptr %2664, align 16, !tbaa !26, !noalias !100
  %2797 = select <2 x i1> %2670, <2 x double> %2784, <2 x double> %2668
  store <2 x double> %2797, ptr %2667, align 16, !tbaa !26, !noalias !100
  br label %2798

2798:                                             ; preds = %2673, %2773
  %2799 = phi <2 x double> [ %2675, %2673 ], [ %2792, %2773 ]
  %2800 = load i64, ptr %132, align 16, !tbaa !21, !noalias !97
  %2801 = sitofp i64 %2800 to double
  %2802 = insertelement <2 x double> poison, double %2801, i64 0
  %2803 = shufflevector <2 x double> %2802, <2 x double> poison, <2 x i32> zeroinitializer
  %2804 = fcmp olt <2 x double> %2799, %2803
  %2805 = and <2 x i1> %2615, %2804
  %2806 = bitcast <2 x i1> %2805 to i2
  %2807 = icmp eq i2 %2806, 0
  br i1 %2807, label %2872, label %2808

2808:                                             ; preds = %2798
  %2809 = getelementptr inbounds nuw i8, ptr %2608, i64 1984
  %2810 = load <2 x double>, ptr %2809, align 16, !tbaa !26, !noalias !100
  %2811 = getelementptr inbounds nuw i8, ptr %2608, i64 2016
  %2812 = load <2 x double>, ptr %2811, align 16, !tbaa !26, !noalias !100
  %2813 = fsub <2 x double> %2596, %2812
  %2814 = load <2 x double>, ptr %2663, align 16, !tbaa !26, !noalias !100
  %2815 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2810, <2 x double> %2813, <2 x double> %2814)
  %2816 = getelementptr inbounds nuw i8, ptr %2608, i64 1616
  %2817 = load <2 x double>, ptr %2816, align 16, !tbaa !26, !noalias !97
  %2818 = getelementptr inbounds nuw i8, ptr %2608, i64 1472
  %2819 = load <2 x double>, ptr %2818, align 16, !tbaa !26, !noalias !97
  %2820 = getelementptr inbounds nuw i8, ptr %2608, i64 1856
  %2821 = load <2 x double>, ptr %2820, align 16, !tbaa !26, !noalias !97
  %2822 = fneg <2 x double> %2821
  %2823 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2817, <2 x double> %2819, <2 x double> %2822)
  %2824 = getelementptr inbounds nuw i8, ptr %2608, i64 1840
  %2825 = load <2 x double>, ptr %2824, align 16, !tbaa !26, !noalias !97
  %2826 = fadd <2 x double> %2817, %2825
  %2827 = getelementptr inbounds nuw i8, ptr %2608, i64 2080
  %2828 = load <2 x i64>, ptr %2827, align 16, !tbaa !26, !noalias !97
  %2829 = getelementptr inbounds nuw i8, ptr %2608, i64 2304
  %2830 = load ptr, ptr %2829, align 16, !tbaa !91, !noalias !97
  %2831 = load <2 x double>, ptr %2830, align 16, !tbaa !26, !noalias !97
  %2832 = fmul <2 x double> %2817, %2831
  %2833 = icmp eq <2 x i64> %2828, zeroinitializer
  %2834 = select <2 x i1> %2833, <2 x double> %2823, <2 x double> %2832
  %2835 = getelementptr inbounds nuw i8, ptr %2608, i64 2312
  %2836 = load ptr, ptr %2835, align 8, !tbaa !92, !noalias !97
  %2837 = load <2 x double>, ptr %2836, align 16, !tbaa !26, !noalias !97
  %2838 = fsub <2 x double> splat (double 1.000000e+00), %2837
  %2839 = fmul <2 x double> %2817, %2838
  %2840 = select <2 x i1> %2833, <2 x double> %2826, <2 x double> %2839
  %2841 = fneg <2 x double> %2840
  %2842 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2841, <2 x double> %2596, <2 x double> %2834)
  %2843 = fcmp ogt <2 x double> %2815, zeroinitializer
  %2844 = fcmp oge <2 x double> %2842, zeroinitializer
  %2845 = and <2 x i1> %2843, %2844
  %2846 = and <2 x i1> %2805, %2845
  %2847 = sext <2 x i1> %2846 to <2 x i64>
  %2848 = xor <2 x i64> %2847, splat (i64 -1)
  %2849 = fadd <2 x double> %2815, %2842
  %2850 = fcmp ogt <2 x double> %2849, zeroinitializer
  %2851 = and <2 x i1> %2805, %2850
  %2852 = select <2 x i1> %2851, <2 x i64> %2848, <2 x i64> zeroinitializer
  %2853 = or <2 x i64> %2852, %2847
  %2854 = fmul <2 x double> %2602, %2842
  %2855 = select <2 x i1> %2846, <2 x double> %2854, <2 x double> zeroinitializer
  %2856 = icmp eq <2 x i64> %2853, zeroinitializer
  %2857 = select <2 x i1> %2856, <2 x double> %2654, <2 x double> %2855
  store <2 x double> %2857, ptr %2655, align 16, !tbaa !26, !noalias !97
  %2858 = select <2 x i1> %2856, <2 x double> %2652, <2 x double> %2596
  store <2 x double> %2858, ptr %2656, align 16, !tbaa !26, !noalias !97
  %2859 = fsub <2 x double> %2810, %2840
  %2860 = fmul <2 x double> %2602, %2859
  %2861 = select <2 x i1> %2856, <2 x double> %2653, <2 x double> %2860
  %2862 = fmul <2 x double> %2602, %2815
  %2863 = fmul <2 x double> %2602, %2849
  %2864 = icmp eq <2 x i64> %2852, zeroinitializer
  %2865 = select <2 x i1> %2864, <2 x double> zeroinitializer, <2 x double> %2863
  %2866 = select <2 x i1> %2846, <2 x double> %2862, <2 x double> %2865
  store <2 x double> %2866, ptr %2657, align 16, !tbaa !26, !noalias !97
  %2867 = load i64, ptr %132, align 16, !tbaa !21, !noalias !97
  %2868 = sitofp i64 %2867 to double
  %2869 = insertelement <2 x double> poison, double %2868, i64 0
  %2870 = shufflevector <2 x double> %2869, <2 x double> poison, <2 x i32> zeroinitializer
  %2871 = select <2 x i1> %2856, <2 x double> %2870, <2 x double> %2799
  store <2 x double> %2871, ptr %2662, align 16, !tbaa !26, !noalias !97
  br label %2872

2872:                                             ; preds = %2798, %2808
  %2873 = phi <2 x double> [ %2866, %2808 ], [ zeroinitializer, %2798 ]
  %2874 = phi <2 x double> [ %2857, %2808 ], [ %2654, %2798 ]
  %2875 = phi <2 x double> [ %2861, %2808 ], [ %2653, %2798 ]
  %2876 = getelementptr inbounds nuw i8, ptr %2608, i64 32
  %2877 = load <2 x double>, ptr %2876, align 16, !tbaa !26, !noalias !97
  %2878 = fadd <2 x double> %2874, %2873
  %2879 = fmul <2 x double> %2877, %2878
  %2880 = fmul <2 x double> %2875, %2877
  %2881 = fadd <2 x double> %2605, %2879
  %2882 = fadd <2 x double> %2604, %2880
  %2883 = add nuw nsw i64 %2606, 1
  %2884 = load i64, ptr %170, align 8, !tbaa !20, !noalias !97
  %2885 = icmp slt i64 %2883, %2884
  br i1 %2885, label %2603, label %2886, !llvm.loop !107

2886:                                             ; preds = %2872, %2561
  %2887 = phi <2 x double> [ zeroinitializer, %2561 ], [ %2881, %2872 ]
  %2888 = phi <2 x double> [ zeroinitializer, %2561 ], [ %2882, %2872 ]
  %2889 = fsub <2 x double> %2567, %2531
  %2890 = fcmp ogt <2 x double> %2889, zeroinitializer
  %2891 = select <2 x i1> %2890, <2 x double> %2889, <2 x double> zeroinitializer
  %2892 = fadd <2 x double> %2596, splat (double 2.731500e+02)
  %2893 = fdiv <2 x double> %2891, splat (double 4.615260e+02)
  %2894 = fadd <2 x double> %2558, %2893
  %2895 = load <2 x double>, ptr %200, align 16, !tbaa !26
  %2896 = fdiv <2 x double> %2894, %2895
  %2897 = fmul <2 x double> %2895, %2896
  %2898 = fdiv <2 x double> %2567, %2897
  %2899 = load <2 x double>, ptr %188, align 16, !tbaa !26, !noalias !108
  %2900 = fsub <2 x double> %2567, %2899
  %2901 = load <2 x double>, ptr %201, align 16, !tbaa !26, !noalias !108
  %2902 = fsub <2 x double> %2900, %2901
  %2903 = load <2 x double>, ptr %202, align 16, !tbaa !26, !noalias !108
  %2904 = load <2 x double>, ptr %152, align 16, !tbaa !26, !noalias !108
  %2905 = fcmp une <2 x double> %2904, splat (double 2.000000e+00)
  %2906 = load <2 x double>, ptr %203, align 16, !tbaa !26, !noalias !108
  %2907 = select <2 x i1> %2905, <2 x double> zeroinitializer, <2 x double> %2906
  %2908 = fadd <2 x double> %2903, %2907
  %2909 = fcmp ule <2 x double> %2900, zeroinitializer
  %2910 = fcmp ule <2 x double> %2908, zeroinitializer
  %2911 = or <2 x i1> %2909, %2910
  %2912 = fmul <2 x double> %2896, splat (double 2.000000e+00)
  %2913 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2912)
  %2914 = fmul <2 x double> %2913, %2908
  %2915 = fadd <2 x double> %2900, splat (double 2.000000e+02)
  %2916 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2915)
  %2917 = select <2 x i1> %2909, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2916
  %2918 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2900, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2919 = fmul <2 x double> %2918, %2914
  %2920 = fmul <2 x double> %2917, %2917
  %2921 = fmul <2 x double> %2917, %2920
  %2922 = fdiv <2 x double> %2919, %2921
  %2923 = fmul <2 x double> %2900, %2914
  %2924 = fdiv <2 x double> %2923, %2917
  %2925 = select <2 x i1> %2911, <2 x double> zeroinitializer, <2 x double> %2924
  %2926 = select <2 x i1> %2911, <2 x double> zeroinitializer, <2 x double> %2922
  %2927 = fcmp ule <2 x double> %2902, zeroinitializer
  %2928 = load <2 x double>, ptr %204, align 16, !tbaa !26, !noalias !108
  %2929 = fmul <2 x double> %2902, %2928
  %2930 = select <2 x i1> %2927, <2 x double> zeroinitializer, <2 x double> %2929
  %2931 = fadd <2 x double> %2930, %2925
  %2932 = select <2 x i1> %2927, <2 x double> zeroinitializer, <2 x double> %2928
  %2933 = fadd <2 x double> %2932, %2926
  %2934 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %2935 = fsub <2 x double> %2899, %2567
  %2936 = fcmp ule <2 x double> %2935, zeroinitializer
  %2937 = fcmp ule <2 x double> %2934, zeroinitializer
  %2938 = or <2 x i1> %2936, %2937
  %2939 = fmul <2 x double> %2560, %2934
  %2940 = fadd <2 x double> %2935, splat (double 2.000000e+02)
  %2941 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2940)
  %2942 = select <2 x i1> %2936, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2941
  %2943 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2935, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2944 = fmul <2 x double> %2943, %2939
  %2945 = fmul <2 x double> %2942, %2942
  %2946 = fmul <2 x double> %2942, %2945
  %2947 = fdiv <2 x double> %2944, %2946
  %2948 = fmul <2 x double> %2935, %2939
  %2949 = fdiv <2 x double> %2948, %2942
  %2950 = load <2 x double>, ptr %177, align 16, !tbaa !26, !noalias !111
  %2951 = load <2 x double>, ptr %190, align 16, !tbaa !26, !noalias !111
  %2952 = load <2 x double>, ptr %178, align 16, !tbaa !26, !noalias !111
  %2953 = load <2 x double>, ptr %191, align 16, !tbaa !26, !noalias !111
  %2954 = fmul <2 x double> %2952, %2953
  %2955 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2950, <2 x double> %2951, <2 x double> %2954)
  %2956 = load <2 x double>, ptr %194, align 16, !tbaa !26, !noalias !111
  %2957 = load <2 x double>, ptr %176, align 16, !tbaa !26, !noalias !111
  %2958 = load <2 x double>, ptr %192, align 16, !tbaa !26, !noalias !111
  %2959 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2956, <2 x double> %2957, <2 x double> %2958)
  %2960 = load <2 x double>, ptr %193, align 16, !tbaa !26, !noalias !111
  %2961 = fneg <2 x double> %2955
  %2962 = fmul <2 x double> %2956, %2961
  %2963 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2958, <2 x double> %2960, <2 x double> %2962)
  %2964 = fdiv <2 x double> %2963, %2959
  %2965 = fcmp ogt <2 x double> %2891, splat (double 2.000000e+03)
  %2966 = select <2 x i1> %2965, <2 x double> %2891, <2 x double> splat (double 2.000000e+03)
  %2967 = fmul <2 x double> %2966, splat (double 0x3EB0C6F7A0B5ED8D)
  %2968 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2967)
  %2969 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2968)
  %2970 = fmul <2 x double> %2969, %2969
  %2971 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2969, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2970)
  %2972 = fadd <2 x double> %2971, splat (double 0x402DD4891DBECC6B)
  %2973 = fmul <2 x double> %2969, splat (double 0x40C77A698FD9BCCA)
  %2974 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2970, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2973)
  %2975 = fadd <2 x double> %2974, splat (double 0xC0B2D7440748F0B3)
  %2976 = fmul <2 x double> %2969, splat (double 0xC148A99584203885)
  %2977 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2970, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2976)
  %2978 = fadd <2 x double> %2977, splat (double 0x4118B9E59F2691E5)
  %2979 = fmul <2 x double> %2978, splat (double 2.000000e+00)
  %2980 = fneg <2 x double> %2975
  %2981 = fmul <2 x double> %2972, splat (double 4.000000e+00)
  %2982 = fneg <2 x double> %2978
  %2983 = fmul <2 x double> %2981, %2982
  %2984 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2975, <2 x double> %2975, <2 x double> %2983)
  %2985 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2984)
  %2986 = fsub <2 x double> %2980, %2985
  %2987 = fdiv <2 x double> %2979, %2986
  %2988 = fadd <2 x double> %2987, splat (double 0x408451671D164BD4)
  %2989 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2987, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2990 = fmul <2 x double> %2989, splat (double -4.000000e+00)
  %2991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2988, <2 x double> %2988, <2 x double> %2990)
  %2992 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2991)
  %2993 = fsub <2 x double> %2988, %2992
  %2994 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2993, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2995 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2994, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2996 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2994, <2 x double> %2995, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2997 = fadd <2 x double> %2994, splat (double 2.731500e+02)
  %2998 = fcmp ule <2 x double> %2994, %2964
  %2999 = load <2 x double>, ptr %206, align 16, !tbaa !26, !noalias !111
  %3000 = fmul <2 x double> %2959, %2999
  %3001 = fadd <2 x double> %2959, %2999
  %3002 = fdiv <2 x double> %3000, %3001
  %3003 = fdiv <2 x double> %3002, %2996
  %3004 = fmul <2 x double> %2997, splat (double 4.615260e+02)
  %3005 = fmul <2 x double> %2966, %2996
  %3006 = fmul <2 x double> %2994, %2999
  %3007 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2964, <2 x double> %2959, <2 x double> %3006)
  %3008 = fdiv <2 x double> %3007, %3001
  %3009 = select <2 x i1> %2998, <2 x double> %2964, <2 x double> %3008
  store <2 x double> %3009, ptr %196, align 16, !tbaa !26, !noalias !111
  %3010 = fsub <2 x double> %2994, %2964
  %3011 = fmul <2 x double> %3010, %3003
  %3012 = select <2 x i1> %2998, <2 x double> zeroinitializer, <2 x double> %3011
  %3013 = fmul <2 x double> %2892, splat (double 4.615260e+02)
  %3014 = fmul <2 x double> %2892, %3013
  %3015 = fmul <2 x double> %2567, %2598
  %3016 = fdiv <2 x double> %3014, %3015
  %3017 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2957, <2 x double> %2567, <2 x double> %2542)
  %3018 = fsub <2 x double> %2887, %3012
  %3019 = fmul <2 x double> %3018, splat (double -4.615260e+02)
  %3020 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2545, <2 x double> %3017, <2 x double> %3019)
  %3021 = fmul <2 x double> %2949, splat (double -2.870530e+02)
  %3022 = select <2 x i1> %2938, <2 x double> splat (double -0.000000e+00), <2 x double> %3021
  %3023 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2898, <2 x double> %2931, <2 x double> %3022)
  %3024 = fadd <2 x double> %3023, %3020
  %3025 = fneg <2 x double> %2997
  %3026 = fmul <2 x double> %3004, %3025
  %3027 = fdiv <2 x double> %3026, %3005
  %3028 = fmul <2 x double> %3027, %3003
  %3029 = select <2 x i1> %2998, <2 x double> splat (double -0.000000e+00), <2 x double> %3028
  %3030 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2888, <2 x double> %3016, <2 x double> %3029)
  %3031 = fmul <2 x double> %3030, splat (double -4.615260e+02)
  %3032 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2545, <2 x double> %2957, <2 x double> %3031)
  %3033 = fmul <2 x double> %2947, splat (double 2.870530e+02)
  %3034 = select <2 x i1> %2938, <2 x double> zeroinitializer, <2 x double> %3033
  %3035 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2898, <2 x double> %2933, <2 x double> %3034)
  %3036 = fadd <2 x double> %3035, %3032
  %3037 = fcmp ule <2 x double> %3024, zeroinitializer
  %3038 = fcmp olt <2 x double> %2564, %2567
  %3039 = select <2 x i1> %3037, <2 x i1> splat (i1 true), <2 x i1> %3038
  %3040 = select <2 x i1> %3039, <2 x double> %2564, <2 x double> %2567
  %3041 = fcmp ogt <2 x double> %2563, %2567
  %3042 = select <2 x i1> %3041, <2 x double> %2563, <2 x double> %2567
  %3043 = select <2 x i1> %3037, <2 x double> %3042, <2 x double> %2563
  %3044 = fdiv <2 x double> %3024, %3036
  %3045 = fsub <2 x double> %2567, %3044
  %3046 = fsub <2 x double> %3045, %2567
  %3047 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3046)
  %3048 = fcmp uge <2 x double> %3047, splat (double 2.000000e-01)
  %3049 = fcmp uge <2 x double> %3043, %3045
  %3050 = fcmp uge <2 x double> %3045, %3040
  %3051 = or <2 x i1> %3049, %3050
  %3052 = and <2 x i1> %3048, %3051
  %3053 = fadd <2 x double> %3043, %3040
  %3054 = fmul <2 x double> %3053, splat (double 5.000000e-01)
  %3055 = select <2 x i1> %3052, <2 x double> %3054, <2 x double> %3045
  %3056 = fsub <2 x double> %3055, %2567
  %3057 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3056)
  %3058 = fcmp oge <2 x double> %3057, splat (double 2.000000e-01)
  %3059 = select <2 x i1> %3058, <2 x i64> %2565, <2 x i64> zeroinitializer
  %3060 = icmp eq <2 x i64> %3059, zeroinitializer
  %3061 = select <2 x i1> %3060, <2 x double> %2567, <2 x double> %3055
  %3062 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3059)
  %3063 = icmp ne i64 %3062, 0
  %3064 = add nuw nsw i32 %2566, 1
  %3065 = icmp samesign ult i32 %2566, 59
  %3066 = select i1 %3063, i1 %3065, i1 false
  br i1 %3066, label %2561, label %3067, !llvm.loop !114

3067:                                             ; preds = %2886
  %3068 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %3069 = load <2 x double>, ptr %207, align 16, !tbaa !26
  %3070 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %3071 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %3072 = fmul <2 x double> %3070, %3071
  %3073 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3068, <2 x double> %3069, <2 x double> %3072)
  %3074 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %3075 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %3076 = fsub <2 x double> %3075, %3061
  %3077 = fcmp ule <2 x double> %3076, zeroinitializer
  %3078 = fcmp ule <2 x double> %3074, zeroinitializer
  %3079 = or <2 x i1> %3078, %3077
  %3080 = fmul <2 x double> %2560, %3074
  %3081 = fadd <2 x double> %3076, splat (double 2.000000e+02)
  %3082 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %3081)
  %3083 = select <2 x i1> %3077, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %3082
  %3084 = fmul <2 x double> %3080, %3076
  %3085 = fdiv <2 x double> %3084, %3083
  %3086 = fmul <2 x double> %3085, splat (double 2.870530e+02)
  %3087 = select <2 x i1> %3079, <2 x double> zeroinitializer, <2 x double> %3086
  %3088 = fdiv <2 x double> %3087, %2545
  %3089 = fsub <2 x double> %3088, %3073
  %3090 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %3091 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %3092 = fmul <2 x double> %2896, %3091
  %3093 = fdiv <2 x double> %2931, %3092
  %3094 = fadd <2 x double> %3090, %3093
  %3095 = fdiv <2 x double> %3089, %3094
  %3096 = fcmp ogt <2 x double> %3095, zeroinitializer
  %3097 = select <2 x i1> %3096, <2 x double> %3095, <2 x double> zeroinitializer
  %3098 = fcmp olt <2 x double> %3097, %3061
  %3099 = select <2 x i1> %3098, <2 x double> %3097, <2 x double> %3061
  %3100 = load <2 x double>, ptr %195, align 16, !tbaa !26
  %3101 = select <2 x i1> %2556, <2 x double> %3100, <2 x double> %3099
  store <2 x double> %3101, ptr %195, align 16, !tbaa !26
  %3102 = select <2 x i1> %2556, <2 x double> %2533, <2 x double> %3009
  store <2 x double> %3102, ptr %196, align 16, !tbaa !26
  store <2 x double> %3061, ptr %189, align 16, !tbaa !26
  store <2 x double> %2596, ptr %209, align 16, !tbaa !26
  %3103 = load i64, ptr %170, align 8, !tbaa !20
  br label %3375

3104:                                             ; preds = %2512
  store <2 x double> %2514, ptr %209, align 16, !tbaa !26
  %3105 = load i64, ptr %170, align 8, !tbaa !20, !noalias !115
  %3106 = icmp sgt i64 %3105, 0
  br i1 %3106, label %3107, label %3378

3107:                                             ; preds = %3104
  %3108 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2514, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3109 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2514, <2 x double> %3108, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3110 = fdiv <2 x double> splat (double 1.000000e+00), %3109
  br label %3111

3111:                                             ; preds = %3107, %3371
  %3112 = phi i64 [ 0, %3107 ], [ %3372, %3371 ]
  %3113 = load ptr, ptr %143, align 8, !tbaa !28, !noalias !115
  %3114 = getelementptr inbounds nuw %struct.Piece, ptr %3113, i64 %3112
  %3115 = getelementptr inbounds nuw i8, ptr %3114, i64 1552
  %3116 = load <2 x double>, ptr %3115, align 16, !tbaa !26, !noalias !115
  %3117 = getelementptr inbounds nuw i8, ptr %3114, i64 1568
  %3118 = load <2 x double>, ptr %3117, align 16, !tbaa !26, !noalias !115
  %3119 = getelementptr inbounds nuw i8, ptr %3114, i64 1904
  %3120 = load <2 x double>, ptr %3119, align 16, !tbaa !26, !noalias !115
  %3121 = fcmp ule <2 x double> %3120, splat (double 1.000000e+00)
  %3122 = fmul <2 x double> %2514, %3118
  %3123 = fcmp ogt <2 x double> %3116, %3122
  %3124 = and <2 x i1> %3121, %3123
  %3125 = fneg <2 x double> %3118
  %3126 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3125, <2 x double> %2514, <2 x double> %3116)
  %3127 = fmul <2 x double> %3110, %3126
  %3128 = select <2 x i1> %3124, <2 x double> %3127, <2 x double> zeroinitializer
  %3129 = xor <2 x i1> %3124, splat (i1 true)
  %3130 = bitcast <2 x i1> %3129 to i2
  %3131 = icmp eq i2 %3130, 0
  %3132 = fdiv <2 x double> %3116, %3118
  %3133 = select <2 x i1> %3124, <2 x double> %2514, <2 x double> %3132
  %3134 = select i1 %3131, <2 x double> %2514, <2 x double> %3133
  %3135 = getelementptr inbounds nuw i8, ptr %3114, i64 2112
  %3136 = load <2 x i64>, ptr %3135, align 16, !tbaa !26, !noalias !115
  %3137 = getelementptr inbounds nuw i8, ptr %3114, i64 560
  %3138 = load <2 x double>, ptr %3137, align 16, !tbaa !26, !noalias !115
  %3139 = fcmp ogt <2 x double> %3138, zeroinitializer
  %3140 = select <2 x i1> %3121, <2 x i1> %3139, <2 x i1> zeroinitializer
  %3141 = select <2 x i1> %3140, <2 x i64> %3136, <2 x i64> zeroinitializer
  %3142 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3141)
  %3143 = icmp eq i64 %3142, 0
  br i1 %3143, label %3154, label %3144

3144:                                             ; preds = %3111
  %3145 = getelementptr inbounds nuw i8, ptr %3114, i64 1584
  %3146 = load <2 x double>, ptr %3145, align 16, !tbaa !26, !noalias !115
  %3147 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3125, <2 x double> %3146, <2 x double> %3116)
  %3148 = fcmp ogt <2 x double> %3147, zeroinitializer
  %3149 = select <2 x i1> %3148, <2 x double> %3147, <2 x double> zeroinitializer
  %3150 = fmul <2 x double> %3110, %3149
  %3151 = icmp eq <2 x i64> %3141, zeroinitializer
  %3152 = select <2 x i1> %3151, <2 x double> %3128, <2 x double> %3150
  %3153 = select <2 x i1> %3151, <2 x double> %3134, <2 x double> %3146
  br label %3154

3154:                                             ; preds = %3144, %3111
  %3155 = phi <2 x double> [ %3153, %3144 ], [ %3134, %3111 ]
  %3156 = phi <2 x double> [ %3152, %3144 ], [ %3128, %3111 ]
  %3157 = getelementptr inbounds nuw i8, ptr %3114, i64 1504
  store <2 x double> %3156, ptr %3157, align 16, !tbaa !26, !noalias !115
  %3158 = getelementptr inbounds nuw i8, ptr %3114, i64 1488
  store <2 x double> %3155, ptr %3158, align 16, !tbaa !26, !noalias !115
  %3159 = getelementptr inbounds nuw i8, ptr %3114, i64 1520
  store <2 x double> zeroinitializer, ptr %3159, align 16, !tbaa !26, !noalias !115
  %3160 = load i64, ptr %132, align 16, !tbaa !21, !noalias !115
  %3161 = sitofp i64 %3160 to double
  %3162 = insertelement <2 x double> poison, double %3161, i64 0
  %3163 = shufflevector <2 x double> %3162, <2 x double> poison, <2 x i32> zeroinitializer
  %3164 = getelementptr inbounds nuw i8, ptr %3114, i64 1536
  store <2 x double> %3163, ptr %3164, align 16, !tbaa !26, !noalias !115
  %3165 = getelementptr inbounds nuw i8, ptr %3114, i64 1968
  %3166 = getelementptr inbounds nuw i8, ptr %3114, i64 2032
  %3167 = load <2 x double>, ptr %3166, align 16, !tbaa !26, !noalias !118
  %3168 = fcmp ole <2 x double> %2514, %3167
  %3169 = getelementptr inbounds nuw i8, ptr %3114, i64 2048
  %3170 = load <2 x double>, ptr %3169, align 16, !tbaa !26, !noalias !118
  %3171 = fcmp oge <2 x double> %2514, %3170
  %3172 = or <2 x i1> %3168, %3171
  %3173 = bitcast <2 x i1> %3172 to i2
  %3174 = icmp eq i2 %3173, 0
  br i1 %3174, label %3175, label %3178

3175:                                             ; preds = %3154
  %3176 = getelementptr inbounds nuw i8, ptr %3114, i64 2000
  %3177 = load <2 x double>, ptr %3176, align 16, !tbaa !26, !noalias !118
  br label %3300

3178:                                             ; preds = %3154
  %3179 = load i64, ptr %132, align 16, !tbaa !21, !noalias !121
  %3180 = sitofp i64 %3179 to double
  %3181 = insertelement <2 x double> poison, double %3180, i64 0
  %3182 = shufflevector <2 x double> %3181, <2 x double> poison, <2 x i32> zeroinitializer
  %3183 = icmp sgt i64 %3179, 0
  br i1 %3183, label %3184, label %3275

3184:                                             ; preds = %3178
  %3185 = sext <2 x i1> %3172 to <2 x i64>
  %3186 = getelementptr inbounds nuw i8, ptr %3114, i64 2200
  %3187 = load ptr, ptr %3186, align 8, !tbaa !85, !noalias !121
  %3188 = getelementptr inbounds nuw i8, ptr %3114, i64 2208
  %3189 = load ptr, ptr %3188, align 16, !tbaa !86, !noalias !121
  %3190 = getelementptr inbounds nuw i8, ptr %3114, i64 2128
  %3191 = load i64, ptr %3190, align 16, !tbaa !31, !noalias !121
  %3192 = getelementptr inbounds nuw i8, ptr %3114, i64 2224
  %3193 = getelementptr inbounds nuw i8, ptr %3114, i64 2216
  %3194 = getelementptr inbounds nuw i8, ptr %3114, i64 2232
  br label %3195

3195:                                             ; preds = %3184, %3243
  %3196 = phi <2 x i64> [ %3185, %3184 ], [ %3215, %3243 ]
  %3197 = phi i64 [ %3179, %3184 ], [ %3205, %3243 ]
  %3198 = phi <2 x double> [ splat (double 1.000000e+09), %3184 ], [ %3258, %3243 ]
  %3199 = phi <2 x double> [ zeroinitializer, %3184 ], [ %3262, %3243 ]
  %3200 = phi <2 x double> [ splat (double 1.000000e+09), %3184 ], [ %3240, %3243 ]
  %3201 = phi <2 x double> [ splat (double 1.000000e+00), %3184 ], [ %3239, %3243 ]
  %3202 = phi <2 x double> [ %3182, %3184 ], [ %3266, %3243 ]
  %3203 = phi <2 x double> [ zeroinitializer, %3184 ], [ %3255, %3243 ]
  %3204 = phi <2 x double> [ zeroinitializer, %3184 ], [ %3253, %3243 ]
  %3205 = add nsw i64 %3197, -1
  %3206 = getelementptr inbounds nuw <2 x double>, ptr %3187, i64 %3205
  %3207 = load <2 x double>, ptr %3206, align 16, !tbaa !26, !noalias !121
  %3208 = getelementptr inbounds nuw <2 x double>, ptr %3189, i64 %3205
  %3209 = load <2 x double>, ptr %3208, align 16, !tbaa !26, !noalias !121
  %3210 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3209, <2 x double> %2514, <2 x double> %3207)
  %3211 = fsub <2 x double> %3210, %2514
  %3212 = fcmp ogt <2 x double> %3211, splat (double 1.000000e-09)
  %3213 = select <2 x i1> %3212, <2 x i64> %3196, <2 x i64> zeroinitializer
  %3214 = icmp sgt i64 %3197, %3191
  %3215 = select i1 %3214, <2 x i64> %3213, <2 x i64> zeroinitializer
  %3216 = icmp slt i64 %3197, %3179
  br i1 %3216, label %3217, label %3229

3217:                                             ; preds = %3195
  %3218 = load ptr, ptr %3192, align 16, !tbaa !83, !noalias !121
  %3219 = getelementptr inbounds nuw <2 x double>, ptr %3218, i64 %3197
  %3220 = load <2 x double>, ptr %3219, align 16, !tbaa !26, !noalias !121
  %3221 = fmul <2 x double> %3211, %3220
  %3222 = icmp eq <2 x i64> %3215, %3196
  %3223 = select <2 x i1> %3222, <2 x double> zeroinitializer, <2 x double> %3221
  %3224 = fadd <2 x double> %3204, %3223
  %3225 = fadd <2 x double> %3209, splat (double -1.000000e+00)
  %3226 = fmul <2 x double> %3225, %3220
  %3227 = select <2 x i1> %3222, <2 x double> zeroinitializer, <2 x double> %3226
  %3228 = fadd <2 x double> %3203, %3227
  br label %3229

3229:                                             ; preds = %3217, %3195
  %3230 = phi <2 x double> [ %3224, %3217 ], [ %3204, %3195 ]
  %3231 = phi <2 x double> [ %3228, %3217 ], [ %3203, %3195 ]
  br i1 %3214, label %3232, label %3238

3232:                                             ; preds = %3229
  %3233 = fneg <2 x double> %3211
  %3234 = icmp eq <2 x i64> %3215, %3196
  %3235 = select <2 x i1> %3234, <2 x double> %3200, <2 x double> %3233
  %3236 = fsub <2 x double> splat (double 1.000000e+00), %3209
  %3237 = select <2 x i1> %3234, <2 x double> %3201, <2 x double> %3236
  br label %3238

3238:                                             ; preds = %3232, %3229
  %3239 = phi <2 x double> [ %3237, %3232 ], [ %3201, %3229 ]
  %3240 = phi <2 x double> [ %3235, %3232 ], [ %3200, %3229 ]
  %3241 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3215)
  %3242 = icmp eq i64 %3241, 0
  br i1 %3242, label %3268, label %3243

3243:                                             ; preds = %3238
  %3244 = load ptr, ptr %3193, align 8, !tbaa !82, !noalias !121
  %3245 = getelementptr inbounds nuw <2 x double>, ptr %3244, i64 %3205
  %3246 = load <2 x double>, ptr %3245, align 16, !tbaa !26, !noalias !121
  %3247 = load ptr, ptr %3194, align 8, !tbaa !84, !noalias !121
  %3248 = getelementptr inbounds nuw <2 x double>, ptr %3247, i64 %3205
  %3249 = load <2 x double>, ptr %3248, align 16, !tbaa !26, !noalias !121
  %3250 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3249, <2 x double> %2514, <2 x double> %3246)
  %3251 = icmp eq <2 x i64> %3215, zeroinitializer
  %3252 = select <2 x i1> %3251, <2 x double> zeroinitializer, <2 x double> %3250
  %3253 = fadd <2 x double> %3230, %3252
  %3254 = select <2 x i1> %3251, <2 x double> zeroinitializer, <2 x double> %3249
  %3255 = fadd <2 x double> %3231, %3254
  %3256 = fcmp olt <2 x double> %3198, %3211
  %3257 = select <2 x i1> %3251, <2 x i1> splat (i1 true), <2 x i1> %3256
  %3258 = select <2 x i1> %3257, <2 x double> %3198, <2 x double> %3211
  %3259 = fsub <2 x double> splat (double 1.000000e+00), %3209
  %3260 = fcmp ogt <2 x double> %3199, %3259
  %3261 = select <2 x i1> %3251, <2 x i1> splat (i1 true), <2 x i1> %3260
  %3262 = select <2 x i1> %3261, <2 x double> %3199, <2 x double> %3259
  %3263 = uitofp nneg i64 %3205 to double
  %3264 = insertelement <2 x double> poison, double %3263, i64 0
  %3265 = shufflevector <2 x double> %3264, <2 x double> poison, <2 x i32> zeroinitializer
  %3266 = select <2 x i1> %3251, <2 x double> %3202, <2 x double> %3265
  %3267 = icmp samesign ugt i64 %3197, 1
  br i1 %3267, label %3195, label %3268, !llvm.loop !106

3268:                                             ; preds = %3238, %3243
  %3269 = phi <2 x double> [ %3266, %3243 ], [ %3202, %3238 ]
  %3270 = phi <2 x double> [ %3262, %3243 ], [ %3199, %3238 ]
  %3271 = phi <2 x double> [ %3258, %3243 ], [ %3198, %3238 ]
  %3272 = phi <2 x double> [ %3253, %3243 ], [ %3230, %3238 ]
  %3273 = phi <2 x double> [ %3255, %3243 ], [ %3231, %3238 ]
  %3274 = fdiv <2 x double> %3240, %3239
  br label %3275

3275:                                             ; preds = %3268, %3178
  %3276 = phi <2 x double> [ %3182, %3178 ], [ %3269, %3268 ]
  %3277 = phi <2 x double> [ zeroinitializer, %3178 ], [ %3270, %3268 ]
  %3278 = phi <2 x double> [ splat (double 1.000000e+09), %3178 ], [ %3271, %3268 ]
  %3279 = phi <2 x double> [ zeroinitializer, %3178 ], [ %3272, %3268 ]
  %3280 = phi <2 x double> [ zeroinitializer, %3178 ], [ %3273, %3268 ]
  %3281 = phi <2 x double> [ splat (double 1.000000e+09), %3178 ], [ %3274, %3268 ]
  %3282 = fsub <2 x double> %2514, %3281
  %3283 = fcmp ogt <2 x double> %3277, splat (double 1.000000e-09)
  %3284 = select <2 x i1> %3283, <2 x double> %3277, <2 x double> splat (double 1.000000e-09)
  %3285 = fdiv <2 x double> %3278, %3284
  %3286 = fadd <2 x double> %2514, %3285
  %3287 = load <2 x double>, ptr %3165, align 16, !tbaa !26, !noalias !118
  %3288 = select <2 x i1> %3172, <2 x double> %3279, <2 x double> %3287
  store <2 x double> %3288, ptr %3165, align 16, !tbaa !26, !noalias !118
  %3289 = getelementptr inbounds nuw i8, ptr %3114, i64 1984
  %3290 = load <2 x double>, ptr %3289, align 16, !tbaa !26, !noalias !118
  %3291 = select <2 x i1> %3172, <2 x double> %3280, <2 x double> %3290
  store <2 x double> %3291, ptr %3289, align 16, !tbaa !26, !noalias !118
  %3292 = getelementptr inbounds nuw i8, ptr %3114, i64 2000
  %3293 = load <2 x double>, ptr %3292, align 16, !tbaa !26, !noalias !118
  %3294 = select <2 x i1> %3172, <2 x double> %3276, <2 x double> %3293
  store <2 x double> %3294, ptr %3292, align 16, !tbaa !26, !noalias !118
  %3295 = getelementptr inbounds nuw i8, ptr %3114, i64 2016
  %3296 = load <2 x double>, ptr %3295, align 16, !tbaa !26, !noalias !118
  %3297 = select <2 x i1> %3172, <2 x double> %2514, <2 x double> %3296
  store <2 x double> %3297, ptr %3295, align 16, !tbaa !26, !noalias !118
  %3298 = select <2 x i1> %3172, <2 x double> %3282, <2 x double> %3167
  store <2 x double> %3298, ptr %3166, align 16, !tbaa !26, !noalias !118
  %3299 = select <2 x i1> %3172, <2 x double> %3286, <2 x double> %3170
  store <2 x double> %3299, ptr %3169, align 16, !tbaa !26, !noalias !118
  br label %3300

3300:                                             ; preds = %3175, %3275
  %3301 = phi <2 x double> [ %3177, %3175 ], [ %3294, %3275 ]
  %3302 = load i64, ptr %132, align 16, !tbaa !21, !noalias !115
  %3303 = sitofp i64 %3302 to double
  %3304 = insertelement <2 x double> poison, double %3303, i64 0
  %3305 = shufflevector <2 x double> %3304, <2 x double> poison, <2 x i32> zeroinitializer
  %3306 = fcmp olt <2 x double> %3301, %3305
  %3307 = and <2 x i1> %3121, %3306
  %3308 = bitcast <2 x i1> %3307 to i2
  %3309 = icmp eq i2 %3308, 0
  br i1 %3309, label %3371, label %3310

3310:                                             ; preds = %3300
  %3311 = getelementptr inbounds nuw i8, ptr %3114, i64 1984
  %3312 = load <2 x double>, ptr %3311, align 16, !tbaa !26, !noalias !118
  %3313 = getelementptr inbounds nuw i8, ptr %3114, i64 2016
  %3314 = load <2 x double>, ptr %3313, align 16, !tbaa !26, !noalias !118
  %3315 = fsub <2 x double> %2514, %3314
  %3316 = load <2 x double>, ptr %3165, align 16, !tbaa !26, !noalias !118
  %3317 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3312, <2 x double> %3315, <2 x double> %3316)
  %3318 = getelementptr inbounds nuw i8, ptr %3114, i64 1616
  %3319 = load <2 x double>, ptr %3318, align 16, !tbaa !26, !noalias !115
  %3320 = getelementptr inbounds nuw i8, ptr %3114, i64 1472
  %3321 = load <2 x double>, ptr %3320, align 16, !tbaa !26, !noalias !115
  %3322 = getelementptr inbounds nuw i8, ptr %3114, i64 1856
  %3323 = load <2 x double>, ptr %3322, align 16, !tbaa !26, !noalias !115
  %3324 = fneg <2 x double> %3323
  %3325 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3319, <2 x double> %3321, <2 x double> %3324)
  %3326 = getelementptr inbounds nuw i8, ptr %3114, i64 1840
  %3327 = load <2 x double>, ptr %3326, align 16, !tbaa !26, !noalias !115
  %3328 = fadd <2 x double> %3319, %3327
  %3329 = getelementptr inbounds nuw i8, ptr %3114, i64 2080
  %3330 = load <2 x i64>, ptr %3329, align 16, !tbaa !26, !noalias !115
  %3331 = getelementptr inbounds nuw i8, ptr %3114, i64 2304
  %3332 = load ptr, ptr %3331, align 16, !tbaa !91, !noalias !115
  %3333 = load <2 x double>, ptr %3332, align 16, !tbaa !26, !noalias !115
  %3334 = fmul <2 x double> %3319, %3333
  %3335 = icmp eq <2 x i64> %3330, zeroinitializer
  %3336 = select <2 x i1> %3335, <2 x double> %3325, <2 x double> %3334
  %3337 = getelementptr inbounds nuw i8, ptr %3114, i64 2312
  %3338 = load ptr, ptr %3337, align 8, !tbaa !92, !noalias !115
  %3339 = load <2 x double>, ptr %3338, align 16, !tbaa !26, !noalias !115
  %3340 = fsub <2 x double> splat (double 1.000000e+00), %3339
  %3341 = fmul <2 x double> %3319, %3340
  %3342 = select <2 x i1> %3335, <2 x double> %3328, <2 x double> %3341
  %3343 = fneg <2 x double> %3342
  %3344 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3343, <2 x double> %2514, <2 x double> %3336)
  %3345 = fcmp ogt <2 x double> %3317, zeroinitializer
  %3346 = fcmp oge <2 x double> %3344, zeroinitializer
  %3347 = and <2 x i1> %3345, %3346
  %3348 = and <2 x i1> %3307, %3347
  %3349 = sext <2 x i1> %3348 to <2 x i64>
  %3350 = xor <2 x i64> %3349, splat (i64 -1)
  %3351 = fadd <2 x double> %3317, %3344
  %3352 = fcmp ogt <2 x double> %3351, zeroinitializer
  %3353 = and <2 x i1> %3307, %3352
  %3354 = select <2 x i1> %3353, <2 x i64> %3350, <2 x i64> zeroinitializer
  %3355 = or <2 x i64> %3354, %3349
  %3356 = fmul <2 x double> %3110, %3344
  %3357 = select <2 x i1> %3348, <2 x double> %3356, <2 x double> zeroinitializer
  %3358 = icmp eq <2 x i64> %3355, zeroinitializer
  %3359 = select <2 x i1> %3358, <2 x double> %3156, <2 x double> %3357
  store <2 x double> %3359, ptr %3157, align 16, !tbaa !26, !noalias !115
  %3360 = select <2 x i1> %3358, <2 x double> %3155, <2 x double> %2514
  store <2 x double> %3360, ptr %3158, align 16, !tbaa !26, !noalias !115
  %3361 = fmul <2 x double> %3110, %3317
  %3362 = fmul <2 x double> %3110, %3351
  %3363 = icmp eq <2 x i64> %3354, zeroinitializer
  %3364 = select <2 x i1> %3363, <2 x double> zeroinitializer, <2 x double> %3362
  %3365 = select <2 x i1> %3348, <2 x double> %3361, <2 x double> %3364
  store <2 x double> %3365, ptr %3159, align 16, !tbaa !26, !noalias !115
  %3366 = load i64, ptr %132, align 16, !tbaa !21, !noalias !115
  %3367 = sitofp i64 %3366 to double
  %3368 = insertelement <2 x double> poison, double %3367, i64 0
  %3369 = shufflevector <2 x double> %3368, <2 x double> poison, <2 x i32> zeroinitializer
  %3370 = select <2 x i1> %3358, <2 x double> %3369, <2 x double> %3301
  store <2 x double> %3370, ptr %3164, align 16, !tbaa !26, !noalias !115
  br label %3371

3371:                                             ; preds = %3300, %3310
  %3372 = add nuw nsw i64 %3112, 1
  %3373 = load i64, ptr %170, align 8, !tbaa !20, !noalias !115
  %3374 = icmp slt i64 %3372, %3373
  br i1 %3374, label %3111, label %3375, !llvm.loop !107

3375:                                             ; preds = %3371, %3067
  %3376 = phi i64 [ %3103, %3067 ], [ %3373, %3371 ]
  %3377 = icmp sgt i64 %3376, 0
  br i1 %3377, label %3554, label %3378

3378:                                             ; preds = %3375, %3104
  %3379 = phi i64 [ %3376, %3375 ], [ %3105, %3104 ]
  %3380 = load <2 x double>, ptr %179, align 16, !tbaa !26
  br label %3455

3381:                                             ; preds = %3658
  %3382 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %3383 = icmp sgt i64 %3682, 0
  br i1 %3383, label %3384, label %3455

3384:                                             ; preds = %3381
  %3385 = load ptr, ptr %143, align 8, !tbaa !28
  %3386 = and i64 %3682, 1
  %3387 = icmp eq i64 %3682, 1
  br i1 %3387, label %3431, label %3388

3388:                                             ; preds = %3384
  %3389 = and i64 %3682, 9223372036854775806
  br label %3390

3390:                                             ; preds = %3390, %3388
  %3391 = phi <2 x double> [ zeroinitializer, %3388 ], [ %3422, %3390 ]
  %3392 = phi <2 x double> [ zeroinitializer, %3388 ], [ %3427, %3390 ]
  %3393 = phi i64 [ 0, %3388 ], [ %3428, %3390 ]
  %3394 = phi i64 [ 0, %3388 ], [ %3429, %3390 ]
  %3395 = getelementptr inbounds nuw %struct.Piece, ptr %3385, i64 %3393
  %3396 = getelementptr inbounds nuw i8, ptr %3395, i64 2112
  %3397 = load <2 x i64>, ptr %3396, align 16, !tbaa !26
  %3398 = getelementptr inbounds nuw i8, ptr %3395, i64 32
  %3399 = load <2 x double>, ptr %3398, align 16, !tbaa !26
  %3400 = getelementptr inbounds nuw i8, ptr %3395, i64 1680
  %3401 = load <2 x double>, ptr %3400, align 16, !tbaa !26
  %3402 = fmul <2 x double> %3399, %3401
  %3403 = icmp eq <2 x i64> %3397, zeroinitializer
  %3404 = select <2 x i1> %3403, <2 x double> %3402, <2 x double> zeroinitializer
  %3405 = fadd <2 x double> %3391, %3404
  %3406 = getelementptr inbounds nuw i8, ptr %3395, i64 1648
  %3407 = load <2 x double>, ptr %3406, align 16, !tbaa !26
  %3408 = fmul <2 x double> %3399, %3407
  %3409 = select <2 x i1> %3403, <2 x double> %3408, <2 x double> zeroinitializer
  %3410 = fadd <2 x double> %3392, %3409
  %3411 = or disjoint i64 %3393, 1
  %3412 = getelementptr inbounds nuw %struct.Piece, ptr %3385, i64 %3411
  %3413 = getelementptr inbounds nuw i8, ptr %3412, i64 2112
  %3414 = load <2 x i64>, ptr %3413, align 16, !tbaa !26
  %3415 = getelementptr inbounds nuw i8, ptr %3412, i64 32
  %3416 = load <2 x double>, ptr %3415, align 16, !tbaa !26
  %3417 = getelementptr inbounds nuw i8, ptr %3412, i64 1680
  %3418 = load <2 x double>, ptr %3417, align 16, !tbaa !26
  %3419 = fmul <2 x double> %3416, %3418
  %3420 = icmp eq <2 x i64> %3414, zeroinitializer
  %3421 = select <2 x i1> %3420, <2 x double> %3419, <2 x double> zeroinitializer
  %3422 = fadd <2 x double> %3405, %3421
  %3423 = getelementptr inbounds nuw i8, ptr %3412, i64 1648
  %3424 = load <2 x double>, ptr %3423, align 16, !tbaa !26
  %3425 = fmul <2 x double> %3416, %3424
  %3426 = select <2 x i1> %3420, <2 x double> %3425, <2 x double> zeroinitializer
  %3427 = fadd <2 x double> %3410, %3426
  %3428 = add nuw nsw i64 %3393, 2
  %3429 = add i64 %3394, 2
  %3430 = icmp eq i64 %3429, %3389
  br i1 %3430, label %3431, label %3390, !llvm.loop !124

3431:                                             ; preds = %3390, %3384
  %3432 = phi <2 x double> [ poison, %3384 ], [ %3422, %3390 ]
  %3433 = phi <2 x double> [ poison, %3384 ], [ %3427, %3390 ]
  %3434 = phi <2 x double> [ zeroinitializer, %3384 ], [ %3422, %3390 ]
  %3435 = phi <2 x double> [ zeroinitializer, %3384 ], [ %3427, %3390 ]
  %3436 = phi i64 [ 0, %3384 ], [ %3428, %3390 ]
  %3437 = icmp eq i64 %3386, 0
  br i1 %3437, label %3455, label %3438

3438:                                             ; preds = %3431
  %3439 = getelementptr inbounds nuw %struct.Piece, ptr %3385, i64 %3436
  %3440 = getelementptr inbounds nuw i8, ptr %3439, i64 2112
  %3441 = load <2 x i64>, ptr %3440, align 16, !tbaa !26
  %3442 = getelementptr inbounds nuw i8, ptr %3439, i64 32
  %3443 = load <2 x double>, ptr %3442, align 16, !tbaa !26
  %3444 = getelementptr inbounds nuw i8, ptr %3439, i64 1680
  %3445 = load <2 x double>, ptr %3444, align 16, !tbaa !26
  %3446 = fmul <2 x double> %3443, %3445
  %3447 = icmp eq <2 x i64> %3441, zeroinitializer
  %3448 = select <2 x i1> %3447, <2 x double> %3446, <2 x double> zeroinitializer
  %3449 = fadd <2 x double> %3434, %3448
  %3450 = getelementptr inbounds nuw i8, ptr %3439, i64 1648
  %3451 = load <2 x double>, ptr %3450, align 16, !tbaa !26
  %3452 = fmul <2 x double> %3443, %3451
  %3453 = select <2 x i1> %3447, <2 x double> %3452, <2 x double> zeroinitializer
  %3454 = fadd <2 x double> %3435, %3453
  br label %3455

3455:                                             ; preds = %3438, %3431, %3378, %3381
  %3456 = phi i1 [ false, %3381 ], [ false, %3378 ], [ true, %3431 ], [ true, %3438 ]
  %3457 = phi <2 x double> [ %3382, %3381 ], [ %3380, %3378 ], [ %3382, %3431 ], [ %3382, %3438 ]
  %3458 = phi i64 [ %3682, %3381 ], [ %3379, %3378 ], [ %3682, %3431 ], [ %3682, %3438 ]
  %3459 = phi <2 x double> [ zeroinitializer, %3381 ], [ zeroinitializer, %3378 ], [ %3433, %3431 ], [ %3454, %3438 ]
  %3460 = phi <2 x double> [ zeroinitializer, %3381 ], [ zeroinitializer, %3378 ], [ %3432, %3431 ], [ %3449, %3438 ]
  %3461 = load <2 x double>, ptr %210, align 16, !tbaa !26
  %3462 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %3463 = fsub <2 x double> %3457, %3462
  %3464 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3461, <2 x double> %3463, <2 x double> %3460)
  %3465 = fadd <2 x double> %3459, %3461
  store <2 x double> %3464, ptr %211, align 16, !tbaa !26
  %3466 = load <2 x double>, ptr %169, align 16, !tbaa !26
  %3467 = fcmp ule <2 x double> %3466, zeroinitializer
  %3468 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %3469 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3466, <2 x double> splat (double 5.000000e-01), <2 x double> %3468)
  %3470 = fsub <2 x double> %3469, %3457
  %3471 = fcmp ogt <2 x double> %3466, splat (double 1.000000e-30)
  %3472 = select <2 x i1> %3471, <2 x double> %3466, <2 x double> splat (double 1.000000e-30)
  %3473 = fdiv <2 x double> %3470, %3472
  %3474 = fcmp ogt <2 x double> %3473, zeroinitializer
  %3475 = select <2 x i1> %3474, <2 x double> %3473, <2 x double> zeroinitializer
  %3476 = fcmp olt <2 x double> %3475, splat (double 1.000000e+00)
  %3477 = select <2 x i1> %3476, <2 x double> %3475, <2 x double> splat (double 1.000000e+00)
  %3478 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %3479 = load <2 x i64>, ptr %157, align 16, !tbaa !26
  %3480 = icmp eq <2 x i64> %3479, zeroinitializer
  %3481 = select <2 x i1> %3480, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %3482 = select <2 x i1> %3467, <2 x double> %3481, <2 x double> %3477
  %3483 = fmul <2 x double> %3478, %3482
  %3484 = fcmp ule <2 x double> %3483, zeroinitializer
  %3485 = fcmp uge <2 x double> %3483, %3478
  %3486 = or <2 x i1> %3484, %3485
  %3487 = or <2 x i1> %3467, %3486
  %3488 = fdiv <2 x double> %3478, %3472
  %3489 = select <2 x i1> %3487, <2 x double> zeroinitializer, <2 x double> %3488
  %3490 = fadd <2 x double> %3465, %3489
  %3491 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %3492 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %3493 = fdiv <2 x double> splat (double 2.000000e+00), %3492
  %3494 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %3495 = icmp eq <2 x i64> %3491, zeroinitializer
  %3496 = select <2 x i1> %3495, <2 x double> %3494, <2 x double> %3493
  %3497 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %3498 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %3499 = fmul <2 x double> %3497, %3498
  %3500 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %3501 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %3502 = fmul <2 x double> %3501, splat (double 5.000000e-01)
  %3503 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3502, <2 x double> %3497, <2 x double> %3500)
  %3504 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %3505 = fmul <2 x double> %3497, %3504
  %3506 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3499, <2 x double> %3503, <2 x double> %3505)
  %3507 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %3508 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %3509 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %3510 = fmul <2 x double> %3498, %3509
  %3511 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3502, <2 x double> %3509, <2 x double> %3500)
  %3512 = fmul <2 x double> %3504, %3509
  %3513 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3510, <2 x double> %3511, <2 x double> %3512)
  %3514 = fmul <2 x double> %3508, %3513
  %3515 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3507, <2 x double> %3506, <2 x double> %3514)
  %3516 = fmul <2 x double> %3457, %3498
  %3517 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3502, <2 x double> %3457, <2 x double> %3500)
  %3518 = fmul <2 x double> %3457, %3504
  %3519 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3516, <2 x double> %3517, <2 x double> %3518)
  %3520 = fneg <2 x double> %3496
  %3521 = load <2 x double>, ptr %180, align 16, !tbaa !26
  %3522 = fneg <2 x double> %3521
  %3523 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3520, <2 x double> %3506, <2 x double> %3522)
  %3524 = select <2 x i1> %3495, <2 x double> %3515, <2 x double> %3523
  %3525 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3496, <2 x double> %3519, <2 x double> %3524)
  %3526 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3501, <2 x double> %3457, <2 x double> %3500)
  %3527 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3498, <2 x double> %3526, <2 x double> %3504)
  %3528 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %3529 = fcmp une <2 x double> %3528, zeroinitializer
  %3530 = fadd <2 x double> %3464, %3525
  %3531 = fsub <2 x double> %3530, %3483
  %3532 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3496, <2 x double> %3527, <2 x double> %3490)
  %3533 = fdiv <2 x double> %3531, %3532
  %3534 = fsub <2 x double> %3457, %3533
  %3535 = select <2 x i1> %3529, <2 x double> %3457, <2 x double> %3534
  store <2 x double> %3535, ptr %179, align 16, !tbaa !26
  %3536 = load <2 x double>, ptr %212, align 16, !tbaa !26
  %3537 = fneg <2 x double> %3507
  %3538 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3537, <2 x double> %3536, <2 x double> %3483)
  %3539 = load <2 x double>, ptr %213, align 16, !tbaa !26
  %3540 = fneg <2 x double> %3508
  %3541 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3540, <2 x double> %3539, <2 x double> %3538)
  %3542 = fdiv <2 x double> %3541, %3494
  %3543 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %3544 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3537, <2 x double> %3543, <2 x double> %3464)
  %3545 = load <2 x double>, ptr %215, align 16, !tbaa !26
  %3546 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3540, <2 x double> %3545, <2 x double> %3544)
  %3547 = fdiv <2 x double> %3546, %3494
  %3548 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3483, <2 x double> %3492, <2 x double> %3536)
  %3549 = select <2 x i1> %3495, <2 x double> %3542, <2 x double> %3548
  %3550 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %3551 = select <2 x i1> %3529, <2 x double> %3550, <2 x double> %3549
  store <2 x double> %3551, ptr %216, align 16, !tbaa !26
  %3552 = load <2 x double>, ptr %217, align 16, !tbaa !26
  %3553 = select <2 x i1> %3529, <2 x double> %3552, <2 x double> %3547
  store <2 x double> %3553, ptr %217, align 16, !tbaa !26
  br i1 %3456, label %3684, label %4029

3554:                                             ; preds = %3375, %3658
  %3555 = phi i64 [ %3681, %3658 ], [ 0, %3375 ]
  %3556 = load ptr, ptr %143, align 8, !tbaa !28
  %3557 = getelementptr inbounds nuw %struct.Piece, ptr %3556, i64 %3555
  %3558 = getelementptr inbounds nuw i8, ptr %3557, i64 1488
  %3559 = load <2 x double>, ptr %3558, align 16, !tbaa !26
  %3560 = getelementptr inbounds nuw i8, ptr %3557, i64 1536
  %3561 = load <2 x double>, ptr %3560, align 16, !tbaa !26
  %3562 = getelementptr inbounds nuw i8, ptr %3557, i64 2200
  %3563 = load ptr, ptr %3562, align 8, !tbaa !85
  %3564 = getelementptr inbounds nuw i8, ptr %3557, i64 2208
  %3565 = load ptr, ptr %3564, align 16, !tbaa !86
  %3566 = getelementptr inbounds nuw i8, ptr %3557, i64 2152
  %3567 = load ptr, ptr %3566, align 8, !tbaa !59
  %3568 = load i64, ptr %132, align 16, !tbaa !21
  %3569 = icmp sgt i64 %3568, 0
  br i1 %3569, label %3570, label %3590

3570:                                             ; preds = %3554
  %3571 = and i64 %3568, 1
  %3572 = icmp eq i64 %3571, 0
  br i1 %3572, label %3586, label %3573

3573:                                             ; preds = %3570
  %3574 = add nsw i64 %3568, -1
  %3575 = uitofp nneg i64 %3574 to double
  %3576 = insertelement <2 x double> poison, double %3575, i64 0
  %3577 = shufflevector <2 x double> %3576, <2 x double> poison, <2 x i32> zeroinitializer
  %3578 = fcmp ugt <2 x double> %3561, %3577
  %3579 = getelementptr inbounds nuw <2 x double>, ptr %3563, i64 %3574
  %3580 = load <2 x double>, ptr %3579, align 16, !tbaa !26
  %3581 = getelementptr inbounds nuw <2 x double>, ptr %3565, i64 %3574
  %3582 = load <2 x double>, ptr %3581, align 16, !tbaa !26
  %3583 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3582, <2 x double> %3559, <2 x double> %3580)
  %3584 = select <2 x i1> %3578, <2 x double> %3583, <2 x double> %3559
  %3585 = getelementptr inbounds nuw <2 x double>, ptr %3567, i64 %3574
  store <2 x double> %3584, ptr %3585, align 16, !tbaa !26
  br label %3586

3586:                                             ; preds = %3573, %3570
  %3587 = phi <2 x double> [ %3559, %3570 ], [ %3584, %3573 ]
  %3588 = phi i64 [ %3568, %3570 ], [ %3574, %3573 ]
  %3589 = icmp eq i64 %3568, 1
  br i1 %3589, label %3590, label %3605

3590:                                             ; preds = %3586, %3605, %3554
  %3591 = getelementptr inbounds nuw i8, ptr %3557, i64 2080
  %3592 = load <2 x i64>, ptr %3591, align 16, !tbaa !26
  %3593 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3592)
  %3594 = icmp eq i64 %3593, 0
  %3595 = load i64, ptr %133, align 8, !tbaa !22
  %3596 = icmp sgt i64 %3595, 0
  br i1 %3594, label %3602, label %3597

3597:                                             ; preds = %3590
  br i1 %3596, label %3598, label %3658

3598:                                             ; preds = %3597
  %3599 = getelementptr inbounds nuw i8, ptr %3557, i64 2304
  %3600 = getelementptr inbounds nuw i8, ptr %3557, i64 2312
  %3601 = getelementptr inbounds nuw i8, ptr %3557, i64 2272
  br label %3633

3602:                                             ; preds = %3590
  br i1 %3596, label %3603, label %3658

3603:                                             ; preds = %3602
  %3604 = getelementptr inbounds nuw i8, ptr %3557, i64 2272
  br label %3651

3605:                                             ; preds = %3586, %3605
  %3606 = phi <2 x double> [ %3630, %3605 ], [ %3587, %3586 ]
  %3607 = phi i64 [ %3620, %3605 ], [ %3588, %3586 ]
  %3608 = add nsw i64 %3607, -1
  %3609 = uitofp nneg i64 %3608 to double
  %3610 = insertelement <2 x double> poison, double %3609, i64 0
  %3611 = shufflevector <2 x double> %3610, <2 x double> poison, <2 x i32> zeroinitializer
  %3612 = fcmp ugt <2 x double> %3561, %3611
  %3613 = getelementptr inbounds nuw <2 x double>, ptr %3563, i64 %3608
  %3614 = load <2 x double>, ptr %3613, align 16, !tbaa !26
  %3615 = getelementptr inbounds nuw <2 x double>, ptr %3565, i64 %3608
  %3616 = load <2 x double>, ptr %3615, align 16, !tbaa !26
  %3617 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3616, <2 x double> %3606, <2 x double> %3614)
  %3618 = select <2 x i1> %3612, <2 x double> %3617, <2 x double> %3559
  %3619 = getelementptr inbounds nuw <2 x double>, ptr %3567, i64 %3608
  store <2 x double> %3618, ptr %3619, align 16, !tbaa !26
  %3620 = add nsw i64 %3607, -2
  %3621 = uitofp nneg i64 %3620 to double
  %3622 = insertelement <2 x double> poison, double %3621, i64 0
  %3623 = shufflevector <2 x double> %3622, <2 x double> poison, <2 x i32> zeroinitializer
  %3624 = fcmp ugt <2 x double> %3561, %3623
  %3625 = getelementptr inbounds nuw <2 x double>, ptr %3563, i64 %3620
  %3626 = load <2 x double>, ptr %3625, align 16, !tbaa !26
  %3627 = getelementptr inbounds nuw <2 x double>, ptr %3565, i64 %3620
  %3628 = load <2 x double>, ptr %3627, align 16, !tbaa !26
  %3629 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3628, <2 x double> %3618, <2 x double> %3626)
  %3630 = select <2 x i1> %3624, <2 x double> %3629, <2 x double> %3559
  %3631 = getelementptr inbounds nuw <2 x double>, ptr %3567, i64 %3620
  store <2 x double> %3630, ptr %3631, align 16, !tbaa !26
  %3632 = icmp samesign ugt i64 %3608, 1
  br i1 %3632, label %3605, label %3590, !llvm.loop !125

3633:                                             ; preds = %3598, %3633
  %3634 = phi i64 [ 0, %3598 ], [ %3648, %3633 ]
  %3635 = phi <2 x double> [ %3559, %3598 ], [ %3645, %3633 ]
  %3636 = load <2 x i64>, ptr %3591, align 16, !tbaa !26
  %3637 = load ptr, ptr %3599, align 16, !tbaa !91
  %3638 = getelementptr inbounds nuw <2 x double>, ptr %3637, i64 %3634
  %3639 = load <2 x double>, ptr %3638, align 16, !tbaa !26
  %3640 = load ptr, ptr %3600, align 8, !tbaa !92
  %3641 = getelementptr inbounds nuw <2 x double>, ptr %3640, i64 %3634
  %3642 = load <2 x double>, ptr %3641, align 16, !tbaa !26
  %3643 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3642, <2 x double> %3635, <2 x double> %3639)
  %3644 = icmp eq <2 x i64> %3636, zeroinitializer
  %3645 = select <2 x i1> %3644, <2 x double> %3559, <2 x double> %3643
  %3646 = load ptr, ptr %3601, align 16, !tbaa !126
  %3647 = getelementptr inbounds nuw <2 x double>, ptr %3646, i64 %3634
  store <2 x double> %3645, ptr %3647, align 16, !tbaa !26
  %3648 = add nuw nsw i64 %3634, 1
  %3649 = load i64, ptr %133, align 8, !tbaa !22
  %3650 = icmp slt i64 %3648, %3649
  br i1 %3650, label %3633, label %3658, !llvm.loop !127

3651:                                             ; preds = %3603, %3651
  %3652 = phi i64 [ 0, %3603 ], [ %3655, %3651 ]
  %3653 = load ptr, ptr %3604, align 16, !tbaa !126
  %3654 = getelementptr inbounds nuw <2 x double>, ptr %3653, i64 %3652
  store <2 x double> %3559, ptr %3654, align 16, !tbaa !26
  %3655 = add nuw nsw i64 %3652, 1
  %3656 = load i64, ptr %133, align 8, !tbaa !22
  %3657 = icmp slt i64 %3655, %3656
  br i1 %3657, label %3651, label %3658, !llvm.loop !128

3658:                                             ; preds = %3633, %3651, %3597, %3602
  %3659 = phi <2 x double> [ %3559, %3602 ], [ %3559, %3597 ], [ %3559, %3651 ], [ %3645, %3633 ]
  %3660 = load <2 x i64>, ptr %3591, align 16, !tbaa !26
  %3661 = getelementptr inbounds nuw i8, ptr %3557, i64 1664
  %3662 = load <2 x double>, ptr %3661, align 16, !tbaa !26
  %3663 = icmp eq <2 x i64> %3660, zeroinitializer
  %3664 = select <2 x i1> %3663, <2 x double> zeroinitializer, <2 x double> %3662
  %3665 = fsub <2 x double> splat (double 1.000000e+00), %3664
  %3666 = getelementptr inbounds nuw i8, ptr %3557, i64 1472
  %3667 = load <2 x double>, ptr %3666, align 16, !tbaa !26
  %3668 = fmul <2 x double> %3664, %3667
  %3669 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3665, <2 x double> %3659, <2 x double> %3668)
  %3670 = getelementptr inbounds nuw i8, ptr %3557, i64 1712
  store <2 x double> %3669, ptr %3670, align 16, !tbaa !26
  %3671 = getelementptr inbounds nuw i8, ptr %3557, i64 1648
  %3672 = load <2 x double>, ptr %3671, align 16, !tbaa !26
  %3673 = fsub <2 x double> %3667, %3659
  %3674 = fmul <2 x double> %3673, %3672
  %3675 = getelementptr inbounds nuw i8, ptr %3557, i64 1680
  store <2 x double> %3674, ptr %3675, align 16, !tbaa !26
  %3676 = getelementptr inbounds nuw i8, ptr %3557, i64 800
  %3677 = load <2 x double>, ptr %3676, align 16, !tbaa !26
  %3678 = fdiv <2 x double> %3674, %3677
  %3679 = fsub <2 x double> %3667, %3678
  %3680 = getelementptr inbounds nuw i8, ptr %3557, i64 1696
  store <2 x double> %3679, ptr %3680, align 16, !tbaa !26
  %3681 = add nuw nsw i64 %3555, 1
  %3682 = load i64, ptr %170, align 8, !tbaa !20
  %3683 = icmp slt i64 %3681, %3682
  br i1 %3683, label %3554, label %3381, !llvm.loop !129

3684:                                             ; preds = %3455, %3963
  %3685 = phi i64 [ %4026, %3963 ], [ 0, %3455 ]
  %3686 = phi <2 x double> [ %4025, %3963 ], [ zeroinitializer, %3455 ]
  %3687 = load ptr, ptr %143, align 8, !tbaa !28
  %3688 = getelementptr inbounds nuw %struct.Piece, ptr %3687, i64 %3685
  %3689 = getelementptr inbounds nuw i8, ptr %3688, i64 1504
  %3690 = load <2 x double>, ptr %3689, align 16, !tbaa !26
  %3691 = getelementptr inbounds nuw i8, ptr %3688, i64 1520
  %3692 = load <2 x double>, ptr %3691, align 16, !tbaa !26
  %3693 = fadd <2 x double> %3690, %3692
  %3694 = getelementptr inbounds nuw i8, ptr %3688, i64 1488
  %3695 = load <2 x double>, ptr %3694, align 16, !tbaa !26
  %3696 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %3697 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3696, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3698 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3696, <2 x double> %3697, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3699 = getelementptr inbounds nuw i8, ptr %3688, i64 1792
  %3700 = load <2 x double>, ptr %3699, align 16, !tbaa !26
  %3701 = getelementptr inbounds nuw i8, ptr %3688, i64 320
  %3702 = load <2 x double>, ptr %3701, align 16, !tbaa !26
  %3703 = fmul <2 x double> %3700, %3702
  %3704 = getelementptr inbounds nuw i8, ptr %3688, i64 1712
  %3705 = load <2 x double>, ptr %3704, align 16, !tbaa !26
  %3706 = fsub <2 x double> %3705, %3695
  %3707 = fmul <2 x double> %3703, %3706
  %3708 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3698, <2 x double> %3693, <2 x double> %3707)
  %3709 = getelementptr inbounds nuw i8, ptr %3688, i64 1424
  %3710 = load <2 x double>, ptr %3709, align 16, !tbaa !26, !noalias !130
  %3711 = getelementptr inbounds nuw i8, ptr %3688, i64 1040
  %3712 = load <2 x double>, ptr %3711, align 16, !tbaa !26, !noalias !130
  %3713 = fneg <2 x double> %3710
  %3714 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3713, <2 x double> %3712, <2 x double> %3693)
  %3715 = getelementptr inbounds nuw i8, ptr %3688, i64 1440
  %3716 = load <2 x double>, ptr %3715, align 16, !tbaa !26, !noalias !130
  %3717 = getelementptr inbounds nuw i8, ptr %3688, i64 1264
  %3718 = load <2 x double>, ptr %3717, align 16, !tbaa !26, !noalias !130
  %3719 = fneg <2 x double> %3716
  %3720 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3719, <2 x double> %3718, <2 x double> %3714)
  %3721 = getelementptr inbounds nuw i8, ptr %3688, i64 1456
  %3722 = load <2 x double>, ptr %3721, align 16, !tbaa !26, !noalias !130
  %3723 = fmul <2 x double> %3720, %3722
  %3724 = getelementptr inbounds nuw i8, ptr %3688, i64 400
  %3725 = load <2 x double>, ptr %3724, align 16, !tbaa !26, !noalias !130
  %3726 = fsub <2 x double> %3725, %3723
  %3727 = getelementptr inbounds nuw i8, ptr %3688, i64 1008
  %3728 = load <2 x double>, ptr %3727, align 16, !tbaa !26, !noalias !130
  %3729 = getelementptr inbounds nuw i8, ptr %3688, i64 1872
  %3730 = load <2 x double>, ptr %3729, align 16, !tbaa !26, !noalias !130
  %3731 = fsub <2 x double> %3728, %3730
  %3732 = getelementptr inbounds nuw i8, ptr %3688, i64 976
  %3733 = load <2 x double>, ptr %3732, align 16, !tbaa !26, !noalias !130
  %3734 = getelementptr inbounds nuw i8, ptr %3688, i64 736
  %3735 = load <2 x double>, ptr %3734, align 16, !tbaa !26, !noalias !130
  %3736 = getelementptr inbounds nuw i8, ptr %3688, i64 2080
  %3737 = load <2 x i64>, ptr %3736, align 16, !tbaa !26, !noalias !130
  %3738 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3737)
  %3739 = icmp eq i64 %3738, 0
  br i1 %3739, label %3925, label %3740

3740:                                             ; preds = %3684
  %3741 = fcmp ogt <2 x double> %3731, %3726
  %3742 = getelementptr inbounds nuw i8, ptr %3688, i64 1904
  %3743 = load <2 x double>, ptr %3742, align 16, !tbaa !26, !noalias !130
  %3744 = fcmp oeq <2 x double> %3743, zeroinitializer
  %3745 = select <2 x i1> %3744, <2 x i1> %3741, <2 x i1> zeroinitializer
  %3746 = select <2 x i1> %3745, <2 x i64> %3737, <2 x i64> zeroinitializer
  %3747 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3746)
  %3748 = icmp eq i64 %3747, 0
  br i1 %3748, label %3821, label %3749

3749:                                             ; preds = %3740
  %3750 = fsub <2 x double> %3731, %3726
  %3751 = getelementptr inbounds nuw i8, ptr %3688, i64 1952
  %3752 = load <2 x double>, ptr %3751, align 16, !tbaa !26, !noalias !130
  %3753 = fmul <2 x double> %3750, %3752
  %3754 = getelementptr inbounds nuw i8, ptr %3688, i64 2184
  %3755 = load ptr, ptr %3754, align 8, !tbaa !66, !noalias !130
  %3756 = load i64, ptr %132, align 16, !tbaa !21, !noalias !130
  %3757 = add nsw i64 %3756, -1
  %3758 = getelementptr inbounds <2 x double>, ptr %3755, i64 %3757
  %3759 = load <2 x double>, ptr %3758, align 16, !tbaa !26, !noalias !130
  %3760 = icmp sgt i64 %3756, 1
  br i1 %3760, label %3761, label %3813

3761:                                             ; preds = %3749
  %3762 = getelementptr inbounds nuw i8, ptr %3688, i64 2128
  %3763 = load i64, ptr %3762, align 16, !tbaa !31, !noalias !130
  %3764 = getelementptr inbounds nuw i8, ptr %3688, i64 1168
  %3765 = getelementptr inbounds nuw i8, ptr %3688, i64 384
  %3766 = getelementptr inbounds nuw i8, ptr %3688, i64 2240
  br label %3767

3767:                                             ; preds = %3761, %3810
  %3768 = phi <2 x double> [ %3733, %3761 ], [ %3805, %3810 ]
  %3769 = phi i64 [ %3757, %3761 ], [ %3811, %3810 ]
  %3770 = phi <2 x double> [ %3759, %3761 ], [ %3793, %3810 ]
  %3771 = phi <2 x i64> [ %3746, %3761 ], [ %3797, %3810 ]
  %3772 = phi <2 x double> [ %3753, %3761 ], [ %3804, %3810 ]
  %3773 = icmp slt i64 %3769, %3763
  br i1 %3773, label %3774, label %3780

3774:                                             ; preds = %3767
  %3775 = load ptr, ptr %3766, align 16, !tbaa !74, !noalias !130
  %3776 = getelementptr inbounds nuw <2 x double>, ptr %3775, i64 %3769
  %3777 = load <2 x double>, ptr %3776, align 16, !tbaa !26, !noalias !130
  %3778 = load <2 x double>, ptr %3765, align 16, !tbaa !26, !noalias !130
  %3779 = fmul <2 x double> %3777, %3778
  br label %3788

3780:                                             ; preds = %3767
  %3781 = load <2 x double>, ptr %3764, align 16, !tbaa !26, !noalias !130
  %3782 = load <2 x double>, ptr %3765, align 16, !tbaa !26, !noalias !130
  %3783 = load ptr, ptr %3766, align 16, !tbaa !74, !noalias !130
  %3784 = getelementptr inbounds nuw <2 x double>, ptr %3783, i64 %3769
  %3785 = load <2 x double>, ptr %3784, align 16, !tbaa !26, !noalias !130
  %3786 = fsub <2 x double> %3781, %3782
  %3787 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3785, <2 x double> %3786, <2 x double> %3782)
  br label %3788

3788:                                             ; preds = %3780, %3774
  %3789 = phi <2 x double> [ %3779, %3774 ], [ %3787, %3780 ]
  %3790 = getelementptr inbounds nuw <2 x double>, ptr %3755, i64 %3769
  %3791 = load <2 x double>, ptr %3790, align 16, !tbaa !26, !noalias !130
  %3792 = icmp eq <2 x i64> %3771, zeroinitializer
  %3793 = select <2 x i1> %3792, <2 x double> %3770, <2 x double> %3791
  %3794 = fsub <2 x double> %3768, %3789
  %3795 = fmul <2 x double> %3794, %3793
  %3796 = fcmp olt <2 x double> %3795, %3772
  %3797 = select <2 x i1> %3796, <2 x i64> %3771, <2 x i64> zeroinitializer
  %3798 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3797)
  %3799 = icmp eq i64 %3798, 0
  br i1 %3799, label %3813, label %3800

3800:                                             ; preds = %3788
  %3801 = fneg <2 x double> %3793
  %3802 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3801, <2 x double> %3794, <2 x double> %3772)
  %3803 = icmp eq <2 x i64> %3797, zeroinitializer
  %3804 = select <2 x i1> %3803, <2 x double> %3772, <2 x double> %3802
  %3805 = select <2 x i1> %3803, <2 x double> %3768, <2 x double> %3789
  %3806 = icmp eq i64 %3769, 1
  br i1 %3806, label %3807, label %3810

3807:                                             ; preds = %3800
  %3808 = load <2 x double>, ptr %3755, align 16, !tbaa !26, !noalias !130
  %3809 = select <2 x i1> %3803, <2 x double> %3793, <2 x double> %3808
  br label %3813

3810:                                             ; preds = %3800
  %3811 = add nsw i64 %3769, -1
  %3812 = icmp sgt i64 %3769, 1
  br i1 %3812, label %3767, label %3813, !llvm.loop !75

3813:                                             ; preds = %3810, %3788, %3807, %3749
  %3814 = phi <2 x double> [ %3753, %3749 ], [ %3804, %3807 ], [ %3772, %3788 ], [ %3804, %3810 ]
  %3815 = phi <2 x double> [ %3733, %3749 ], [ %3805, %3807 ], [ %3768, %3788 ], [ %3805, %3810 ]
  %3816 = phi <2 x double> [ %3759, %3749 ], [ %3809, %3807 ], [ %3793, %3788 ], [ %3793, %3810 ]
  %3817 = fdiv <2 x double> %3814, %3816
  %3818 = fsub <2 x double> %3815, %3817
  %3819 = icmp eq <2 x i64> %3746, zeroinitializer
  %3820 = select <2 x i1> %3819, <2 x double> %3733, <2 x double> %3818
  br label %3821

3821:                                             ; preds = %3813, %3740
  %3822 = phi <2 x double> [ %3820, %3813 ], [ %3733, %3740 ]
  %3823 = getelementptr inbounds nuw i8, ptr %3688, i64 656
  %3824 = load <2 x double>, ptr %3823, align 16, !tbaa !26, !noalias !130
  %3825 = getelementptr inbounds nuw i8, ptr %3688, i64 672
  %3826 = load <2 x double>, ptr %3825, align 16, !tbaa !26, !noalias !130
  %3827 = getelementptr inbounds nuw i8, ptr %3688, i64 688
  %3828 = load <2 x double>, ptr %3827, align 16, !tbaa !26, !noalias !130
  %3829 = getelementptr inbounds nuw i8, ptr %3688, i64 640
  %3830 = load <2 x double>, ptr %3829, align 16, !tbaa !26, !noalias !130
  %3831 = load <2 x double>, ptr %3688, align 16, !tbaa !26, !noalias !130
  %3832 = fmul <2 x double> %3831, splat (double 5.000000e-04)
  %3833 = fmul <2 x double> %3735, splat (double 3.000000e+00)
  %3834 = fmul <2 x double> %3833, %3828
  %3835 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3826, <2 x double> splat (double 2.000000e+00), <2 x double> %3834)
  %3836 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3735, <2 x double> %3835, <2 x double> %3824)
  %3837 = fdiv <2 x double> splat (double 1.000000e+00), %3836
  %3838 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3735, <2 x double> %3828, <2 x double> %3826)
  %3839 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3735, <2 x double> %3838, <2 x double> %3824)
  %3840 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3735, <2 x double> %3839, <2 x double> %3830)
  %3841 = fsub <2 x double> %3840, %3822
  %3842 = fmul <2 x double> %3841, %3837
  %3843 = fmul <2 x double> %3842, %3842
  %3844 = fmul <2 x double> %3837, %3843
  %3845 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3833, <2 x double> %3828, <2 x double> %3826)
  %3846 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3844, <2 x double> %3845, <2 x double> %3842)
  %3847 = fsub <2 x double> %3735, %3846
  %3848 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3846)
  %3849 = fcmp oge <2 x double> %3848, %3832
  %3850 = bitcast <2 x i1> %3849 to i2
  %3851 = icmp eq i2 %3850, 0
  br i1 %3851, label %3913, label %3852, !llvm.loop !76

3852:                                             ; preds = %3821
  %3853 = fmul <2 x double> %3847, splat (double 3.000000e+00)
  %3854 = fmul <2 x double> %3853, %3828
  %3855 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3826, <2 x double> splat (double 2.000000e+00), <2 x double> %3854)
  %3856 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3847, <2 x double> %3855, <2 x double> %3824)
  %3857 = fdiv <2 x double> splat (double 1.000000e+00), %3856
  %3858 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3847, <2 x double> %3828, <2 x double> %3826)
  %3859 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3847, <2 x double> %3858, <2 x double> %3824)
  %3860 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3847, <2 x double> %3859, <2 x double> %3830)
  %3861 = fsub <2 x double> %3860, %3822
  %3862 = fmul <2 x double> %3861, %3857
  %3863 = fmul <2 x double> %3862, %3862
  %3864 = fmul <2 x double> %3857, %3863
  %3865 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3853, <2 x double> %3828, <2 x double> %3826)
  %3866 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3864, <2 x double> %3865, <2 x double> %3862)
  %3867 = fsub <2 x double> %3847, %3866
  %3868 = select <2 x i1> %3849, <2 x double> %3867, <2 x double> %3847
  %3869 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3866)
  %3870 = fcmp oge <2 x double> %3869, %3832
  %3871 = and <2 x i1> %3870, %3849
  %3872 = bitcast <2 x i1> %3871 to i2
  %3873 = icmp eq i2 %3872, 0
  br i1 %3873, label %3913, label %3874, !llvm.loop !76

3874:                                             ; preds = %3852
  %3875 = fmul <2 x double> %3868, splat (double 3.000000e+00)
  %3876 = fmul <2 x double> %3875, %3828
  %3877 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3826, <2 x double> splat (double 2.000000e+00), <2 x double> %3876)
  %3878 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3868, <2 x double> %3877, <2 x double> %3824)
  %3879 = fdiv <2 x double> splat (double 1.000000e+00), %3878
  %3880 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3868, <2 x double> %3828, <2 x double> %3826)
  %3881 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3868, <2 x double> %3880, <2 x double> %3824)
  %3882 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3868, <2 x double> %3881, <2 x double> %3830)
  %3883 = fsub <2 x double> %3882, %3822
  %3884 = fmul <2 x double> %3883, %3879
  %3885 = fmul <2 x double> %3884, %3884
  %3886 = fmul <2 x double> %3879, %3885
  %3887 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3875, <2 x double> %3828, <2 x double> %3826)
  %3888 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3886, <2 x double> %3887, <2 x double> %3884)
  %3889 = fsub <2 x double> %3868, %3888
  %3890 = select <2 x i1> %3871, <2 x double> %3889, <2 x double> %3868
  %3891 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3888)
  %3892 = fcmp oge <2 x double> %3891, %3832
  %3893 = and <2 x i1> %3892, %3871
  %3894 = bitcast <2 x i1> %3893 to i2
  %3895 = icmp eq i2 %3894, 0
  br i1 %3895, label %3913, label %3896, !llvm.loop !76

3896:                                             ; preds = %3874
  %3897 = fmul <2 x double> %3890, splat (double 3.000000e+00)
  %3898 = fmul <2 x double> %3897, %3828
  %3899 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3826, <2 x double> splat (double 2.000000e+00), <2 x double> %3898)
  %3900 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3890, <2 x double> %3899, <2 x double> %3824)
  %3901 = fdiv <2 x double> splat (double 1.000000e+00), %3900
  %3902 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3890, <2 x double> %3828, <2 x double> %3826)
  %3903 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3890, <2 x double> %3902, <2 x double> %3824)
  %3904 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3890, <2 x double> %3903, <2 x double> %3830)
  %3905 = fsub <2 x double> %3904, %3822
  %3906 = fmul <2 x double> %3905, %3901
  %3907 = fmul <2 x double> %3906, %3906
  %3908 = fmul <2 x double> %3901, %3907
  %3909 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3897, <2 x double> %3828, <2 x double> %3826)
  %3910 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3908, <2 x double> %3909, <2 x double> %3906)
  %3911 = fsub <2 x double> %3890, %3910
  %3912 = select <2 x i1> %3893, <2 x double> %3911, <2 x double> %3890
  br label %3913

3913:                                             ; preds = %3896, %3874, %3852, %3821
  %3914 = phi <2 x double> [ %3847, %3821 ], [ %3868, %3852 ], [ %3890, %3874 ], [ %3912, %3896 ]
  %3915 = fmul <2 x double> %3831, splat (double 2.800000e-01)
  %3916 = fcmp ogt <2 x double> %3914, %3915
  %3917 = select <2 x i1> %3916, <2 x double> %3914, <2 x double> %3915
  %3918 = fcmp olt <2 x double> %3917, %3831
  %3919 = select <2 x i1> %3918, <2 x double> %3917, <2 x double> %3831
  %3920 = icmp eq <2 x i64> %3737, zeroinitializer
  %3921 = select <2 x i1> %3920, <2 x double> %3735, <2 x double> %3919
  %3922 = fcmp olt <2 x double> %3731, %3726
  %3923 = select <2 x i1> %3920, <2 x i1> splat (i1 true), <2 x i1> %3922
  %3924 = select <2 x i1> %3923, <2 x double> %3731, <2 x double> %3726
  br label %3925

3925:                                             ; preds = %3913, %3684
  %3926 = phi <2 x double> [ %3924, %3913 ], [ %3731, %3684 ]
  %3927 = phi <2 x double> [ %3921, %3913 ], [ %3735, %3684 ]
  %3928 = phi <2 x double> [ %3822, %3913 ], [ %3733, %3684 ]
  %3929 = fsub <2 x double> %3726, %3926
  %3930 = fsub <2 x double> %3927, %3735
  %3931 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3930)
  %3932 = getelementptr inbounds nuw i8, ptr %3688, i64 768
  %3933 = load <2 x double>, ptr %3932, align 16, !tbaa !26
  %3934 = fsub <2 x double> %3929, %3933
  %3935 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3934)
  %3936 = getelementptr inbounds nuw i8, ptr %3688, i64 1952
  %3937 = load <2 x double>, ptr %3936, align 16, !tbaa !26
  %3938 = fmul <2 x double> %3937, %3935
  %3939 = icmp eq <2 x i64> %3737, zeroinitializer
  %3940 = select <2 x i1> %3939, <2 x double> %3938, <2 x double> %3931
  br i1 %3739, label %3963, label %3941

3941:                                             ; preds = %3925
  %3942 = getelementptr inbounds nuw i8, ptr %3688, i64 1776
  %3943 = load <2 x double>, ptr %3942, align 16, !tbaa !26
  %3944 = fmul <2 x double> %3943, splat (double 2.000000e+00)
  %3945 = getelementptr inbounds nuw i8, ptr %3688, i64 96
  %3946 = load <2 x double>, ptr %3945, align 16, !tbaa !26
  %3947 = getelementptr inbounds nuw i8, ptr %3688, i64 112
  %3948 = load <2 x double>, ptr %3947, align 16, !tbaa !26
  %3949 = getelementptr inbounds nuw i8, ptr %3688, i64 128
  %3950 = load <2 x double>, ptr %3949, align 16, !tbaa !26
  %3951 = fmul <2 x double> %3695, %3950
  %3952 = fmul <2 x double> %3951, splat (double 0x3FD5555555555555)
  %3953 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3948, <2 x double> splat (double 5.000000e-01), <2 x double> %3952)
  %3954 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3695, <2 x double> %3953, <2 x double> %3946)
  %3955 = fmul <2 x double> %3695, %3954
  %3956 = getelementptr inbounds nuw i8, ptr %3688, i64 192
  %3957 = load <2 x double>, ptr %3956, align 16, !tbaa !26
  %3958 = fneg <2 x double> %3957
  %3959 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3958, <2 x double> %3695, <2 x double> %3955)
  %3960 = fmul <2 x double> %3944, %3959
  %3961 = fsub <2 x double> %3708, %3960
  %3962 = select <2 x i1> %3939, <2 x double> %3708, <2 x double> %3961
  br label %3963

3963:                                             ; preds = %3925, %3941
  %3964 = phi <2 x double> [ %3962, %3941 ], [ %3708, %3925 ]
  %3965 = getelementptr inbounds nuw i8, ptr %3688, i64 816
  store <2 x double> %3723, ptr %3965, align 16, !tbaa !26
  store <2 x double> %3929, ptr %3932, align 16, !tbaa !26
  %3966 = getelementptr inbounds nuw i8, ptr %3688, i64 784
  store <2 x double> %3926, ptr %3966, align 16, !tbaa !26
  %3967 = getelementptr inbounds nuw i8, ptr %3688, i64 752
  %3968 = load <2 x double>, ptr %3967, align 16, !tbaa !26
  %3969 = select <2 x i1> %3939, <2 x double> %3968, <2 x double> %3928
  store <2 x double> %3969, ptr %3967, align 16, !tbaa !26
  %3970 = select <2 x i1> %3939, <2 x double> %3735, <2 x double> %3927
  store <2 x double> %3970, ptr %3734, align 16, !tbaa !26
  %3971 = getelementptr inbounds nuw i8, ptr %3688, i64 880
  store <2 x double> %3692, ptr %3971, align 16, !tbaa !26
  %3972 = getelementptr inbounds nuw i8, ptr %3688, i64 896
  store <2 x double> %3695, ptr %3972, align 16, !tbaa !26
  %3973 = getelementptr inbounds nuw i8, ptr %3688, i64 800
  %3974 = load <2 x double>, ptr %3973, align 16, !tbaa !26
  %3975 = getelementptr inbounds nuw i8, ptr %3688, i64 1472
  %3976 = load <2 x double>, ptr %3975, align 16, !tbaa !26
  %3977 = fsub <2 x double> %3976, %3695
  %3978 = getelementptr inbounds nuw i8, ptr %3688, i64 2064
  %3979 = load <2 x double>, ptr %3978, align 16, !tbaa !26
  %3980 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3974, <2 x double> %3979, <2 x double> splat (double 1.000000e+00))
  %3981 = fdiv <2 x double> %3977, %3980
  %3982 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3695, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3983 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3695, <2 x double> %3982, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3984 = fneg <2 x double> %3690
  %3985 = fmul <2 x double> %3983, %3984
  %3986 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3974, <2 x double> %3981, <2 x double> %3985)
  %3987 = getelementptr inbounds nuw i8, ptr %3688, i64 864
  store <2 x double> %3986, ptr %3987, align 16, !tbaa !26
  %3988 = getelementptr inbounds nuw i8, ptr %3688, i64 1696
  %3989 = load <2 x double>, ptr %3988, align 16, !tbaa !26
  %3990 = fsub <2 x double> %3976, %3989
  %3991 = fsub <2 x double> %3990, %3981
  %3992 = getelementptr inbounds nuw i8, ptr %3688, i64 912
  store <2 x double> %3991, ptr %3992, align 16, !tbaa !26
  %3993 = getelementptr inbounds nuw i8, ptr %3688, i64 1840
  %3994 = load <2 x double>, ptr %3993, align 16, !tbaa !26
  %3995 = getelementptr inbounds nuw i8, ptr %3688, i64 1856
  %3996 = load <2 x double>, ptr %3995, align 16, !tbaa !26
  %3997 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3994, <2 x double> %3695, <2 x double> %3996)
  %3998 = getelementptr inbounds nuw i8, ptr %3688, i64 1680
  %3999 = load <2 x double>, ptr %3998, align 16, !tbaa !26
  %4000 = getelementptr inbounds nuw i8, ptr %3688, i64 1056
  %4001 = load <2 x double>, ptr %4000, align 16, !tbaa !26
  %4002 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3713, <2 x double> %4001, <2 x double> %3999)
  %4003 = getelementptr inbounds nuw i8, ptr %3688, i64 1280
  %4004 = load <2 x double>, ptr %4003, align 16, !tbaa !26
  %4005 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3719, <2 x double> %4004, <2 x double> %4002)
  %4006 = fmul <2 x double> %3722, %4005
  %4007 = getelementptr inbounds nuw i8, ptr %3688, i64 832
  store <2 x double> %4006, ptr %4007, align 16, !tbaa !26
  %4008 = getelementptr inbounds nuw i8, ptr %3688, i64 1072
  %4009 = load <2 x double>, ptr %4008, align 16, !tbaa !26
  %4010 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3713, <2 x double> %4009, <2 x double> %3964)
  %4011 = getelementptr inbounds nuw i8, ptr %3688, i64 1296
  %4012 = load <2 x double>, ptr %4011, align 16, !tbaa !26
  %4013 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3719, <2 x double> %4012, <2 x double> %4010)
  %4014 = fmul <2 x double> %3722, %4013
  %4015 = getelementptr inbounds nuw i8, ptr %3688, i64 848
  store <2 x double> %4014, ptr %4015, align 16, !tbaa !26
  %4016 = getelementptr inbounds nuw i8, ptr %3688, i64 1152
  %4017 = load <2 x double>, ptr %4016, align 16, !tbaa !26
  %4018 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3713, <2 x double> %4017, <2 x double> %3997)
  %4019 = getelementptr inbounds nuw i8, ptr %3688, i64 1376
  %4020 = load <2 x double>, ptr %4019, align 16, !tbaa !26
  %4021 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3719, <2 x double> %4020, <2 x double> %4018)
  %4022 = fmul <2 x double> %3722, %4021
  %4023 = getelementptr inbounds nuw i8, ptr %3688, i64 928
  store <2 x double> %4022, ptr %4023, align 16, !tbaa !26
  %4024 = fcmp ogt <2 x double> %3686, %3940
  %4025 = select <2 x i1> %4024, <2 x double> %3686, <2 x double> %3940
  %4026 = add nuw nsw i64 %3685, 1
  %4027 = load i64, ptr %170, align 8, !tbaa !20
  %4028 = icmp slt i64 %4026, %4027
  br i1 %4028, label %3684, label %4029, !llvm.loop !133

4029:                                             ; preds = %3963, %3455
  %4030 = phi <2 x double> [ zeroinitializer, %3455 ], [ %4025, %3963 ]
  %4031 = phi i64 [ %3458, %3455 ], [ %4027, %3963 ]
  %4032 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %4033 = fadd <2 x double> %4032, splat (double 1.000000e+00)
  store <2 x double> %4033, ptr %183, align 16, !tbaa !26
  %4034 = icmp sgt i64 %4031, 0
  br i1 %4034, label %4035, label %4041

4035:                                             ; preds = %4029
  %4036 = load ptr, ptr %143, align 8, !tbaa !28
  %4037 = load i64, ptr %132, align 16, !tbaa !21
  %4038 = add nsw i64 %4037, -1
  br label %4063

4039:                                             ; preds = %4089
  %4040 = fcmp oeq <2 x double> %4104, zeroinitializer
  br label %4041

4041:                                             ; preds = %4039, %4029
  %4042 = phi <2 x i1> [ splat (i1 true), %4029 ], [ %4040, %4039 ]
  %4043 = load i64, ptr %218, align 16, !tbaa !24
  %4044 = sitofp i64 %4043 to double
  %4045 = insertelement <2 x double> poison, double %4044, i64 0
  %4046 = shufflevector <2 x double> %4045, <2 x double> poison, <2 x i32> zeroinitializer
  %4047 = fcmp oge <2 x double> %4033, %4046
  %4048 = and <2 x i1> %4042, %4047
  %4049 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %4050 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %4051 = fcmp olt <2 x double> %4030, %4050
  %4052 = or <2 x i1> %4051, %4048
  %4053 = fcmp oge <2 x double> %4033, splat (double 2.000000e+01)
  %4054 = or <2 x i1> %4053, %4052
  %4055 = select <2 x i1> %4054, <2 x i64> %4049, <2 x i64> zeroinitializer
  store <2 x i64> %4055, ptr %147, align 16, !tbaa !26
  %4056 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4055)
  %4057 = icmp eq i64 %4056, 0
  br i1 %4057, label %531, label %4058, !llvm.loop !56

4058:                                             ; preds = %4041
  %4059 = load i64, ptr %170, align 8, !tbaa !20
  %4060 = icmp sgt i64 %4059, 0
  br i1 %4060, label %4061, label %4107

4061:                                             ; preds = %4058
  %4062 = icmp eq <2 x i64> %4055, zeroinitializer
  br label %4429

4063:                                             ; preds = %4035, %4089
  %4064 = phi i64 [ 0, %4035 ], [ %4105, %4089 ]
  %4065 = phi <2 x double> [ zeroinitializer, %4035 ], [ %4104, %4089 ]
  %4066 = getelementptr inbounds nuw %struct.Piece, ptr %4036, i64 %4064
  %4067 = getelementptr inbounds nuw i8, ptr %4066, i64 2128
  %4068 = load i64, ptr %4067, align 16, !tbaa !31
  %4069 = icmp sgt i64 %4037, %4068
  br i1 %4069, label %4078, label %4070

4070:                                             ; preds = %4063
  %4071 = getelementptr inbounds nuw i8, ptr %4066, i64 2240
  %4072 = load ptr, ptr %4071, align 16, !tbaa !74
  %4073 = getelementptr inbounds <2 x double>, ptr %4072, i64 %4038
  %4074 = load <2 x double>, ptr %4073, align 16, !tbaa !26
  %4075 = getelementptr inbounds nuw i8, ptr %4066, i64 384
  %4076 = load <2 x double>, ptr %4075, align 16, !tbaa !26
  %4077 = fmul <2 x double> %4074, %4076
  br label %4089

4078:                                             ; preds = %4063
  %4079 = getelementptr inbounds nuw i8, ptr %4066, i64 944
  %4080 = load <2 x double>, ptr %4079, align 16, !tbaa !26
  %4081 = getelementptr inbounds nuw i8, ptr %4066, i64 384
  %4082 = load <2 x double>, ptr %4081, align 16, !tbaa !26
  %4083 = getelementptr inbounds nuw i8, ptr %4066, i64 2240
  %4084 = load ptr, ptr %4083, align 16, !tbaa !74
  %4085 = getelementptr inbounds <2 x double>, ptr %4084, i64 %4038
  %4086 = load <2 x double>, ptr %4085, align 16, !tbaa !26
  %4087 = fsub <2 x double> %4080, %4082
  %4088 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4086, <2 x double> %4087, <2 x double> %4082)
  br label %4089

4089:                                             ; preds = %4070, %4078
  %4090 = phi <2 x double> [ %4077, %4070 ], [ %4088, %4078 ]
  %4091 = getelementptr inbounds nuw i8, ptr %4066, i64 2080
  %4092 = load <2 x i64>, ptr %4091, align 16, !tbaa !26
  %4093 = getelementptr inbounds nuw i8, ptr %4066, i64 1904
  %4094 = load <2 x double>, ptr %4093, align 16, !tbaa !26
  %4095 = fcmp une <2 x double> %4094, zeroinitializer
  %4096 = getelementptr inbounds nuw i8, ptr %4066, i64 752
  %4097 = load <2 x double>, ptr %4096, align 16, !tbaa !26
  %4098 = fcmp uge <2 x double> %4097, %4090
  %4099 = select <2 x i1> %4098, <2 x i1> splat (i1 true), <2 x i1> %4095
  %4100 = icmp eq <2 x i64> %4092, zeroinitializer
  %4101 = select <2 x i1> %4099, <2 x i1> splat (i1 true), <2 x i1> %4100
  %4102 = select <2 x i1> %4101, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %4103 = fcmp ogt <2 x double> %4065, %4102
  %4104 = select <2 x i1> %4103, <2 x double> %4065, <2 x double> %4102
  %4105 = add nuw nsw i64 %4064, 1
  %4106 = icmp eq i64 %4105, %4031
  br i1 %4106, label %4039, label %4063, !llvm.loop !134

4107:                                             ; preds = %4477, %4058
  %4108 = phi i64 [ %4059, %4058 ], [ %4483, %4477 ]
  %4109 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %4110 = fadd <2 x double> %4109, splat (double 1.000000e+00)
  %4111 = icmp eq <2 x i64> %4055, zeroinitializer
  %4112 = select <2 x i1> %4111, <2 x double> %4109, <2 x double> %4110
  store <2 x double> %4112, ptr %175, align 16, !tbaa !26
  %4113 = fcmp ogt <2 x double> %4112, splat (double 4.000000e+01)
  %4114 = select <2 x i1> %4113, <2 x i64> %4055, <2 x i64> zeroinitializer
  %4115 = xor <2 x i64> %4114, %4055
  %4116 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %4117 = fadd <2 x double> %4116, splat (double 1.000000e+00)
  %4118 = icmp eq <2 x i64> %4114, zeroinitializer
  %4119 = select <2 x i1> %4118, <2 x double> %4116, <2 x double> %4117
  store <2 x double> %4119, ptr %140, align 16, !tbaa !26
  %4120 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %4121 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4122 = fsub <2 x double> %4120, %4121
  %4123 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %4122)
  %4124 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4125 = fmul <2 x double> %4124, splat (double 1.500000e+00)
  %4126 = fcmp ogt <2 x double> %4123, %4125
  %4127 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4128 = fcmp ogt <2 x double> %4127, splat (double 2.000000e-03)
  %4129 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4130 = fcmp oeq <2 x double> %4129, zeroinitializer
  %4131 = and <2 x i1> %4126, %4130
  %4132 = and <2 x i1> %4128, %4131
  %4133 = fdiv <2 x double> %4124, %4123
  %4134 = select <2 x i1> %4132, <2 x i64> %4115, <2 x i64> zeroinitializer
  %4135 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4136 = fcmp ogt <2 x double> %4135, %4127
  %4137 = select <2 x i1> %4136, <2 x double> %4135, <2 x double> %4127
  %4138 = select <2 x i1> %4132, <2 x double> zeroinitializer, <2 x double> %4137
  %4139 = icmp eq <2 x i64> %4134, zeroinitializer
  %4140 = select <2 x i1> %4139, <2 x double> %4135, <2 x double> %4138
  store <2 x double> %4140, ptr %173, align 16, !tbaa !26
  %4141 = fcmp ogt <2 x double> %4133, splat (double 5.000000e-02)
  %4142 = select <2 x i1> %4141, <2 x double> %4133, <2 x double> splat (double 5.000000e-02)
  %4143 = fcmp olt <2 x double> %4142, splat (double 0x3FEE666666666666)
  %4144 = select <2 x i1> %4143, <2 x double> %4142, <2 x double> splat (double 0x3FEE666666666666)
  %4145 = fmul <2 x double> %4127, %4144
  %4146 = fcmp ogt <2 x double> %4145, splat (double 0x3EB0C6F7A0B5ED8D)
  %4147 = select <2 x i1> %4146, <2 x double> %4145, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4148 = load <2 x double>, ptr %153, align 16, !tbaa !26
  %4149 = select <2 x i1> %4139, <2 x double> %4148, <2 x double> %4147
  store <2 x double> %4149, ptr %153, align 16, !tbaa !26
  %4150 = load <2 x double>, ptr %137, align 16, !tbaa !26
  %4151 = fadd <2 x double> %4150, splat (double 1.000000e+00)
  %4152 = select <2 x i1> %4139, <2 x double> %4150, <2 x double> %4151
  store <2 x double> %4152, ptr %137, align 16, !tbaa !26
  %4153 = xor <2 x i64> %4134, %4115
  %4154 = icmp sgt i64 %4108, 0
  br i1 %4154, label %4155, label %4254

4155:                                             ; preds = %4107
  %4156 = load ptr, ptr %143, align 8, !tbaa !28
  %4157 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %4158 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %4159 = fcmp une <2 x double> %4157, %4158
  %4160 = fcmp ule <2 x double> %4157, zeroinitializer
  %4161 = or <2 x i1> %4160, %4159
  %4162 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %4163 = fcmp ogt <2 x double> %4127, splat (double 0x3E7AD7F29ABCAF48)
  %4164 = fcmp ogt <2 x double> %4127, splat (double 1.000000e-05)
  %4165 = fcmp ogt <2 x double> %4127, splat (double 1.000000e-04)
  br label %4166

4166:                                             ; preds = %4155, %4166
  %4167 = phi i64 [ 0, %4155 ], [ %4250, %4166 ]
  %4168 = phi <2 x i64> [ zeroinitializer, %4155 ], [ %4246, %4166 ]
  %4169 = phi <2 x i64> [ zeroinitializer, %4155 ], [ %4197, %4166 ]
  %4170 = phi <2 x double> [ splat (double 1.000000e+00), %4155 ], [ %4249, %4166 ]
  %4171 = getelementptr inbounds nuw %struct.Piece, ptr %4156, i64 %4167
  %4172 = getelementptr inbounds nuw i8, ptr %4171, i64 768
  %4173 = load <2 x double>, ptr %4172, align 16, !tbaa !26
  %4174 = getelementptr inbounds nuw i8, ptr %4171, i64 992
  %4175 = load <2 x double>, ptr %4174, align 16, !tbaa !26
  %4176 = getelementptr inbounds nuw i8, ptr %4171, i64 2080
  %4177 = load <2 x i64>, ptr %4176, align 16, !tbaa !26
  %4178 = xor <2 x i64> %4177, splat (i64 -1)
  %4179 = getelementptr inbounds nuw i8, ptr %4171, i64 224
  %4180 = load <2 x double>, ptr %4179, align 16, !tbaa !26
  %4181 = fmul <2 x double> %4162, %4180
  %4182 = fcmp ogt <2 x double> %4181, splat (double 0x3E7AD7F29ABCAF48)
  %4183 = fneg <2 x double> %4181
  %4184 = select <2 x i1> %4182, <2 x double> %4183, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %4185 = fcmp olt <2 x double> %4173, %4184
  %4186 = select <2 x i1> %4185, <2 x i1> %4161, <2 x i1> zeroinitializer
  %4187 = select <2 x i1> %4186, <2 x i64> %4178, <2 x i64> zeroinitializer
  %4188 = fcmp ole <2 x double> %4175, zeroinitializer
  %4189 = select <2 x i1> %4188, <2 x i64> %4187, <2 x i64> zeroinitializer
  %4190 = getelementptr inbounds nuw i8, ptr %4171, i64 208
  %4191 = load <2 x double>, ptr %4190, align 16, !tbaa !26
  %4192 = fmul <2 x double> %4191, splat (double -3.000000e-07)
  %4193 = fcmp olt <2 x double> %4173, %4192
  %4194 = select <2 x i1> %4163, <2 x i1> %4193, <2 x i1> zeroinitializer
  %4195 = select <2 x i1> %4194, <2 x i64> %4189, <2 x i64> zeroinitializer
  %4196 = or <2 x i64> %4195, %4168
  %4197 = or <2 x i64> %4195, %4169
  %4198 = fcmp olt <2 x double> %4170, splat (double 3.000000e-01)
  %4199 = icmp eq <2 x i64> %4195, zeroinitializer
  %4200 = select <2 x i1> %4199, <2 x i1> splat (i1 true), <2 x i1> %4198
  %4201 = select <2 x i1> %4200, <2 x double> %4170, <2 x double> splat (double 3.000000e-01)
  %4202 = xor <2 x i64> %4189, splat (i64 -1)
  %4203 = and <2 x i64> %4187, %4202
  %4204 = select <2 x i1> %4164, <2 x i64> %4203, <2 x i64> zeroinitializer
  %4205 = fsub <2 x double> %4175, %4173
  %4206 = fdiv <2 x double> %4175, %4205
  %4207 = or <2 x i64> %4196, %4204
  %4208 = fcmp olt <2 x double> %4201, %4206
  %4209 = icmp eq <2 x i64> %4204, zeroinitializer
  %4210 = select <2 x i1> %4209, <2 x i1> splat (i1 true), <2 x i1> %4208
  %4211 = select <2 x i1> %4210, <2 x double> %4201, <2 x double> %4206
  %4212 = getelementptr inbounds nuw i8, ptr %4171, i64 976
  %4213 = load <2 x double>, ptr %4212, align 16, !tbaa !26
  %4214 = getelementptr inbounds nuw i8, ptr %4171, i64 752
  %4215 = load <2 x double>, ptr %4214, align 16, !tbaa !26
  %4216 = getelementptr inbounds nuw i8, ptr %4171, i64 1904
  %4217 = load <2 x double>, ptr %4216, align 16, !tbaa !26
  %4218 = fcmp oeq <2 x double> %4217, zeroinitializer
  %4219 = getelementptr inbounds nuw i8, ptr %4171, i64 368
  %4220 = load <2 x double>, ptr %4219, align 16, !tbaa !26
  %4221 = fmul <2 x double> %4220, splat (double 0x3FEFF7CED916872B)
  %4222 = fcmp olt <2 x double> %4215, %4221
  %4223 = and <2 x i1> %4218, %4222
  %4224 = and <2 x i1> %4165, %4223
  %4225 = fsub <2 x double> %4213, %4220
  %4226 = fsub <2 x double> %4213, %4215
  %4227 = fdiv <2 x double> %4225, %4226
  %4228 = fcmp uge <2 x double> %4211, %4227
  %4229 = select <2 x i1> %4224, <2 x i1> %4228, <2 x i1> zeroinitializer
  %4230 = select <2 x i1> %4229, <2 x double> %4227, <2 x double> %4211
  %4231 = fcmp oeq <2 x double> %4217, splat (double 1.000000e+00)
  %4232 = getelementptr inbounds nuw i8, ptr %4171, i64 816
  %4233 = load <2 x double>, ptr %4232, align 16, !tbaa !26
  %4234 = getelementptr inbounds nuw i8, ptr %4171, i64 400
  %4235 = load <2 x double>, ptr %4234, align 16, !tbaa !26
  %4236 = fmul <2 x double> %4235, splat (double 1.000100e+00)
  %4237 = fcmp ogt <2 x double> %4233, %4236
  %4238 = and <2 x i1> %4231, %4237
  %4239 = and <2 x i1> %4165, %4238
  %4240 = getelementptr inbounds nuw i8, ptr %4171, i64 1040
  %4241 = load <2 x double>, ptr %4240, align 16, !tbaa !26
  %4242 = fsub <2 x double> %4235, %4241
  %4243 = fsub <2 x double> %4233, %4241
  %4244 = fdiv <2 x double> %4242, %4243
  %4245 = select <2 x i1> %4238, <2 x i1> %4165, <2 x i1> %4224
  %4246 = select <2 x i1> %4245, <2 x i64> splat (i64 -1), <2 x i64> %4207
  %4247 = fcmp uge <2 x double> %4230, %4244
  %4248 = select <2 x i1> %4239, <2 x i1> %4247, <2 x i1> zeroinitializer
  %4249 = select <2 x i1> %4248, <2 x double> %4244, <2 x double> %4230
  %4250 = add nuw nsw i64 %4167, 1
  %4251 = icmp eq i64 %4250, %4108
  br i1 %4251, label %4252, label %4166, !llvm.loop !135

4252:                                             ; preds = %4166
  %4253 = icmp eq <2 x i64> %4197, zeroinitializer
  br label %4254

4254:                                             ; preds = %4252, %4107
  %4255 = phi <2 x double> [ splat (double 1.000000e+00), %4107 ], [ %4249, %4252 ]
  %4256 = phi <2 x i1> [ splat (i1 true), %4107 ], [ %4253, %4252 ]
  %4257 = phi <2 x i64> [ zeroinitializer, %4107 ], [ %4246, %4252 ]
  %4258 = and <2 x i64> %4257, %4153
  %4259 = fcmp ogt <2 x double> %4140, %4127
  %4260 = select <2 x i1> %4259, <2 x double> %4140, <2 x double> %4127
  %4261 = select <2 x i1> %4256, <2 x double> %4260, <2 x double> zeroinitializer
  %4262 = icmp eq <2 x i64> %4258, zeroinitializer
  %4263 = select <2 x i1> %4262, <2 x double> %4140, <2 x double> %4261
  %4264 = fcmp ogt <2 x double> %4255, splat (double 5.000000e-02)
  %4265 = select <2 x i1> %4264, <2 x double> %4255, <2 x double> splat (double 5.000000e-02)
  %4266 = fcmp olt <2 x double> %4265, splat (double 0x3FEE666666666666)
  %4267 = select <2 x i1> %4266, <2 x double> %4265, <2 x double> splat (double 0x3FEE666666666666)
  %4268 = fmul <2 x double> %4127, %4267
  %4269 = fcmp ogt <2 x double> %4268, splat (double 0x3EB0C6F7A0B5ED8D)
  %4270 = select <2 x i1> %4269, <2 x double> %4268, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4271 = select <2 x i1> %4262, <2 x double> %4149, <2 x double> %4270
  %4272 = fadd <2 x double> %4152, splat (double 1.000000e+00)
  %4273 = select <2 x i1> %4262, <2 x double> %4152, <2 x double> %4272
  %4274 = xor <2 x i64> %4258, %4153
  %4275 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %4276 = fmul <2 x double> %4275, splat (double 5.000000e-01)
  %4277 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %4278 = load <2 x i64>, ptr %157, align 16, !tbaa !26
  %4279 = fneg <2 x double> %4276
  %4280 = icmp eq <2 x i64> %4278, zeroinitializer
  %4281 = select <2 x i1> %4280, <2 x double> %4279, <2 x double> %4276
  %4282 = fadd <2 x double> %4277, %4281
  %4283 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %4284 = fsub <2 x double> %4283, %4282
  %4285 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %4286 = fsub <2 x double> %4285, %4282
  %4287 = fneg <2 x double> %4284
  %4288 = select <2 x i1> %4280, <2 x double> %4287, <2 x double> %4284
  %4289 = fneg <2 x double> %4286
  %4290 = select <2 x i1> %4280, <2 x double> %4289, <2 x double> %4286
  %4291 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %4292 = fcmp oeq <2 x double> %4291, zeroinitializer
  %4293 = load <2 x double>, ptr %169, align 16, !tbaa !26
  %4294 = fcmp oeq <2 x double> %4293, zeroinitializer
  %4295 = and <2 x i1> %4292, %4294
  %4296 = fcmp olt <2 x double> %4288, splat (double -4.000000e-03)
  %4297 = and <2 x i1> %4295, %4296
  %4298 = fcmp ogt <2 x double> %4290, splat (double 4.000000e-03)
  %4299 = and <2 x i1> %4298, %4297
  %4300 = and <2 x i1> %4128, %4299
  %4301 = fsub <2 x double> %4288, %4290
  %4302 = fdiv <2 x double> %4288, %4301
  %4303 = select <2 x i1> %4300, <2 x i64> %4274, <2 x i64> zeroinitializer
  %4304 = fcmp ogt <2 x double> %4263, %4127
  %4305 = icmp eq <2 x i64> %4303, zeroinitializer
  %4306 = select <2 x i1> %4305, <2 x i1> splat (i1 true), <2 x i1> %4304
  %4307 = select <2 x i1> %4306, <2 x double> %4263, <2 x double> %4127
  store <2 x double> %4307, ptr %173, align 16, !tbaa !26
  %4308 = fcmp ogt <2 x double> %4302, splat (double 5.000000e-02)
  %4309 = select <2 x i1> %4308, <2 x double> %4302, <2 x double> splat (double 5.000000e-02)
  %4310 = fcmp olt <2 x double> %4309, splat (double 0x3FEE666666666666)
  %4311 = select <2 x i1> %4310, <2 x double> %4309, <2 x double> splat (double 0x3FEE666666666666)
  %4312 = fmul <2 x double> %4127, %4311
  %4313 = fcmp ogt <2 x double> %4312, splat (double 0x3EB0C6F7A0B5ED8D)
  %4314 = select <2 x i1> %4313, <2 x double> %4312, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4315 = select <2 x i1> %4305, <2 x double> %4271, <2 x double> %4314
  store <2 x double> %4315, ptr %153, align 16, !tbaa !26
  %4316 = fadd <2 x double> %4273, splat (double 1.000000e+00)
  %4317 = select <2 x i1> %4305, <2 x double> %4273, <2 x double> %4316
  store <2 x double> %4317, ptr %137, align 16, !tbaa !26
  %4318 = xor <2 x i64> %4303, %4274
  %4319 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %4320 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %4321 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %4322 = fsub <2 x double> %4320, %4321
  %4323 = load <2 x double>, ptr %224, align 16, !tbaa !26
  %4324 = fcmp une <2 x double> %4323, splat (double 1.000000e+00)
  %4325 = load <2 x double>, ptr %225, align 16, !tbaa !26
  %4326 = fsub <2 x double> %4283, %4325
  %4327 = select <2 x i1> %4324, <2 x double> splat (double -1.000000e+00), <2 x double> %4326
  %4328 = fcmp une <2 x double> %4323, splat (double 2.000000e+00)
  %4329 = fsub <2 x double> %4319, %4325
  %4330 = select <2 x i1> %4328, <2 x double> %4327, <2 x double> %4329
  %4331 = fcmp une <2 x double> %4323, splat (double 3.000000e+00)
  %4332 = fsub <2 x double> %4322, %4325
  %4333 = select <2 x i1> %4331, <2 x double> %4330, <2 x double> %4332
  %4334 = fcmp une <2 x double> %4323, splat (double 4.000000e+00)
  %4335 = fsub <2 x double> %4325, %4322
  %4336 = select <2 x i1> %4334, <2 x double> %4333, <2 x double> %4335
  br i1 %4154, label %4337, label %4385

4337:                                             ; preds = %4254
  %4338 = load ptr, ptr %143, align 8, !tbaa !28
  %4339 = and i64 %4108, 3
  %4340 = icmp ult i64 %4108, 4
  br i1 %4340, label %4369, label %4341

4341:                                             ; preds = %4337
  %4342 = and i64 %4108, 9223372036854775804
  br label %4343

4343:                                             ; preds = %4343, %4341
  %4344 = phi i64 [ 0, %4341 ], [ %4366, %4343 ]
  %4345 = phi <2 x double> [ splat (double 1.000000e+09), %4341 ], [ %4365, %4343 ]
  %4346 = phi i64 [ 0, %4341 ], [ %4367, %4343 ]
  %4347 = getelementptr inbounds nuw %struct.Piece, ptr %4338, i64 %4344, i32 34
  %4348 = load <2 x double>, ptr %4347, align 16, !tbaa !26
  %4349 = fcmp olt <2 x double> %4345, %4348
  %4350 = select <2 x i1> %4349, <2 x double> %4345, <2 x double> %4348
  %4351 = or disjoint i64 %4344, 1
  %4352 = getelementptr inbounds nuw %struct.Piece, ptr %4338, i64 %4351, i32 34
  %4353 = load <2 x double>, ptr %4352, align 16, !tbaa !26
  %4354 = fcmp olt <2 x double> %4350, %4353
  %4355 = select <2 x i1> %4354, <2 x double> %4350, <2 x double> %4353
  %4356 = or disjoint i64 %4344, 2
  %4357 = getelementptr inbounds nuw %struct.Piece, ptr %4338, i64 %4356, i32 34
  %4358 = load <2 x double>, ptr %4357, align 16, !tbaa !26
  %4359 = fcmp olt <2 x double> %4355, %4358
  %4360 = select <2 x i1> %4359, <2 x double> %4355, <2 x double> %4358
  %4361 = or disjoint i64 %4344, 3
  %4362 = getelementptr inbounds nuw %struct.Piece, ptr %4338, i64 %4361, i32 34
  %4363 = load <2 x double>, ptr %4362, align 16, !tbaa !26
  %4364 = fcmp olt <2 x double> %4360, %4363
  %4365 = select <2 x i1> %4364, <2 x double> %4360, <2 x double> %4363
  %4366 = add nuw nsw i64 %4344, 4
  %4367 = add i64 %4346, 4
  %4368 = icmp eq i64 %4367, %4342
  br i1 %4368, label %4369, label %4343, !llvm.loop !136

4369:                                             ; preds = %4343, %4337
  %4370 = phi <2 x double> [ poison, %4337 ], [ %4365, %4343 ]
  %4371 = phi i64 [ 0, %4337 ], [ %4366, %4343 ]
  %4372 = phi <2 x double> [ splat (double 1.000000e+09), %4337 ], [ %4365, %4343 ]
  %4373 = icmp eq i64 %4339, 0
  br i1 %4373, label %4385, label %4374

4374:                                             ; preds = %4369, %4374
  %4375 = phi i64 [ %4382, %4374 ], [ %4371, %4369 ]
  %4376 = phi <2 x double> [ %4381, %4374 ], [ %4372, %4369 ]
  %4377 = phi i64 [ %4383, %4374 ], [ 0, %4369 ]
  %4378 = getelementptr inbounds nuw %struct.Piece, ptr %4338, i64 %4375, i32 34
  %4379 = load <2 x double>, ptr %4378, align 16, !tbaa !26
  %4380 = fcmp olt <2 x double> %4376, %4379
  %4381 = select <2 x i1> %4380, <2 x double> %4376, <2 x double> %4379
  %4382 = add nuw nsw i64 %4375, 1
  %4383 = add i64 %4377, 1
  %4384 = icmp eq i64 %4383, %4339
  br i1 %4384, label %4385, label %4374, !llvm.loop !137

4385:                                             ; preds = %4369, %4374, %4254
  %4386 = phi <2 x double> [ splat (double 1.000000e+09), %4254 ], [ %4370, %4369 ], [ %4381, %4374 ]
  %4387 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %4388 = fsub <2 x double> %4387, %4321
  %4389 = fsub <2 x double> %4285, %4325
  %4390 = select <2 x i1> %4324, <2 x double> splat (double -1.000000e+00), <2 x double> %4389
  %4391 = fsub <2 x double> %4386, %4325
  %4392 = select <2 x i1> %4328, <2 x double> %4390, <2 x double> %4391
  %4393 = fsub <2 x double> %4388, %4325
  %4394 = select <2 x i1> %4331, <2 x double> %4392, <2 x double> %4393
  %4395 = fsub <2 x double> %4325, %4388
  %4396 = select <2 x i1> %4334, <2 x double> %4394, <2 x double> %4395
  %4397 = fcmp une <2 x double> %4323, zeroinitializer
  %4398 = fcmp oge <2 x double> %4127, splat (double 5.000000e-02)
  %4399 = and <2 x i1> %4398, %4397
  %4400 = fcmp olt <2 x double> %4336, zeroinitializer
  %4401 = and <2 x i1> %4399, %4400
  %4402 = fsub <2 x double> %4396, %4336
  %4403 = fmul <2 x double> %4402, splat (double 2.000000e-02)
  %4404 = fcmp ogt <2 x double> %4396, %4403
  %4405 = and <2 x i1> %4401, %4404
  %4406 = fsub <2 x double> %4336, %4396
  %4407 = fdiv <2 x double> %4336, %4406
  %4408 = fcmp olt <2 x double> %4407, splat (double 0x3FEE666666666666)
  %4409 = and <2 x i1> %4408, %4405
  %4410 = select <2 x i1> %4409, <2 x i64> %4318, <2 x i64> zeroinitializer
  %4411 = fcmp ogt <2 x double> %4307, %4127
  %4412 = icmp eq <2 x i64> %4410, zeroinitializer
  %4413 = select <2 x i1> %4412, <2 x i1> splat (i1 true), <2 x i1> %4411
  %4414 = select <2 x i1> %4413, <2 x double> %4307, <2 x double> %4127
  store <2 x double> %4414, ptr %173, align 16, !tbaa !26
  %4415 = fcmp ogt <2 x double> %4407, splat (double 5.000000e-02)
  %4416 = select <2 x i1> %4415, <2 x double> %4407, <2 x double> splat (double 5.000000e-02)
  %4417 = fcmp olt <2 x double> %4416, splat (double 0x3FEE666666666666)
  %4418 = select <2 x i1> %4417, <2 x double> %4416, <2 x double> splat (double 0x3FEE666666666666)
  %4419 = fmul <2 x double> %4127, %4418
  %4420 = fcmp ogt <2 x double> %4419, splat (double 0x3EB0C6F7A0B5ED8D)
  %4421 = select <2 x i1> %4420, <2 x double> %4419, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %4422 = select <2 x i1> %4412, <2 x double> %4315, <2 x double> %4421
  store <2 x double> %4422, ptr %153, align 16, !tbaa !26
  %4423 = fadd <2 x double> %4317, splat (double 1.000000e+00)
  %4424 = select <2 x i1> %4412, <2 x double> %4317, <2 x double> %4423
  store <2 x double> %4424, ptr %137, align 16, !tbaa !26
  %4425 = xor <2 x i64> %4410, %4318
  %4426 = or <2 x i64> %4425, %4114
  %4427 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4426)
  %4428 = icmp eq i64 %4427, 0
  br i1 %4428, label %531, label %4485

4429:                                             ; preds = %4061, %4477
  %4430 = phi i64 [ 0, %4061 ], [ %4482, %4477 ]
  %4431 = load ptr, ptr %143, align 8, !tbaa !28
  %4432 = getelementptr inbounds nuw %struct.Piece, ptr %4431, i64 %4430
  %4433 = getelementptr inbounds nuw i8, ptr %4432, i64 2152
  %4434 = load ptr, ptr %4433, align 8, !tbaa !59
  %4435 = load <2 x double>, ptr %4434, align 16, !tbaa !26
  %4436 = getelementptr inbounds nuw i8, ptr %4432, i64 336
  %4437 = load <2 x double>, ptr %4436, align 16, !tbaa !26
  %4438 = getelementptr inbounds nuw i8, ptr %4434, i64 16
  %4439 = load <2 x double>, ptr %4438, align 16, !tbaa !26
  %4440 = fsub <2 x double> %4439, %4435
  %4441 = fneg <2 x double> %4437
  %4442 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4441, <2 x double> %4440, <2 x double> %4435)
  %4443 = getelementptr inbounds nuw i8, ptr %4432, i64 2128
  %4444 = load i64, ptr %4443, align 16, !tbaa !31
  %4445 = icmp eq i64 %4444, 0
  br i1 %4445, label %4477, label %4446

4446:                                             ; preds = %4429
  %4447 = getelementptr <2 x double>, ptr %4434, i64 %4444
  %4448 = getelementptr i8, ptr %4447, i64 -16
  %4449 = load <2 x double>, ptr %4448, align 16, !tbaa !26
  %4450 = load <2 x double>, ptr %4447, align 16, !tbaa !26
  %4451 = getelementptr inbounds nuw i8, ptr %4432, i64 720
  %4452 = load <2 x double>, ptr %4451, align 16, !tbaa !26
  %4453 = getelementptr inbounds nuw i8, ptr %4432, i64 736
  %4454 = load <2 x double>, ptr %4453, align 16, !tbaa !26
  %4455 = getelementptr inbounds nuw i8, ptr %4432, i64 16
  %4456 = load <2 x double>, ptr %4455, align 16, !tbaa !26
  %4457 = fsub <2 x double> %4454, %4456
  %4458 = fmul <2 x double> %4452, %4457
  %4459 = getelementptr inbounds nuw i8, ptr %4432, i64 144
  %4460 = load <2 x double>, ptr %4459, align 16, !tbaa !26
  %4461 = getelementptr inbounds nuw i8, ptr %4432, i64 704
  %4462 = load <2 x double>, ptr %4461, align 16, !tbaa !26
  %4463 = fdiv <2 x double> %4460, %4462
  %4464 = getelementptr inbounds nuw i8, ptr %4432, i64 48
  %4465 = load <2 x double>, ptr %4464, align 16, !tbaa !26
  %4466 = getelementptr inbounds nuw i8, ptr %4432, i64 64
  %4467 = load <2 x double>, ptr %4466, align 16, !tbaa !26
  %4468 = getelementptr inbounds nuw i8, ptr %4432, i64 80
  %4469 = load <2 x double>, ptr %4468, align 16, !tbaa !26
  %4470 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4450, <2 x double> %4469, <2 x double> %4467)
  %4471 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4450, <2 x double> %4470, <2 x double> %4465)
  %4472 = fdiv <2 x double> %4471, %4458
  %4473 = fmul <2 x double> %4450, %4472
  %4474 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4463, <2 x double> %4449, <2 x double> %4473)
  %4475 = fadd <2 x double> %4463, %4472
  %4476 = fdiv <2 x double> %4474, %4475
  br label %4477

4477:                                             ; preds = %4429, %4446
  %4478 = phi <2 x double> [ %4476, %4446 ], [ %4442, %4429 ]
  %4479 = getelementptr inbounds nuw i8, ptr %4432, i64 1888
  %4480 = load <2 x double>, ptr %4479, align 16, !tbaa !26
  %4481 = select <2 x i1> %4062, <2 x double> %4480, <2 x double> %4478
  store <2 x double> %4481, ptr %4479, align 16, !tbaa !26
  %4482 = add nuw nsw i64 %4430, 1
  %4483 = load i64, ptr %170, align 8, !tbaa !20
  %4484 = icmp slt i64 %4482, %4483
  br i1 %4484, label %4429, label %4107, !llvm.loop !139

4485:                                             ; preds = %4385
  %4486 = icmp eq <2 x i64> %4426, zeroinitializer
  %4487 = select <2 x i1> %4486, <2 x double> %4121, <2 x double> %4120
  store <2 x double> %4487, ptr %220, align 16, !tbaa !26
  %4488 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %4489 = select <2 x i1> %4486, <2 x double> %4488, <2 x double> %4283
  store <2 x double> %4489, ptr %164, align 16, !tbaa !26
  %4490 = select <2 x i1> %4486, <2 x double> %4283, <2 x double> %4285
  store <2 x double> %4490, ptr %158, align 16, !tbaa !26
  %4491 = load <2 x double>, ptr %251, align 16, !tbaa !26
  %4492 = select <2 x i1> %4486, <2 x double> %4491, <2 x double> %4320
  store <2 x double> %4492, ptr %251, align 16, !tbaa !26
  %4493 = select <2 x i1> %4486, <2 x double> %4320, <2 x double> %4387
  store <2 x double> %4493, ptr %252, align 16, !tbaa !26
  %4494 = load <2 x double>, ptr %254, align 16, !tbaa !26
  %4495 = load <2 x double>, ptr %253, align 16, !tbaa !26
  %4496 = select <2 x i1> %4486, <2 x double> %4495, <2 x double> %4494
  store <2 x double> %4496, ptr %253, align 16, !tbaa !26
  %4497 = load <2 x double>, ptr %255, align 16, !tbaa !26
  %4498 = select <2 x i1> %4486, <2 x double> %4494, <2 x double> %4497
  store <2 x double> %4498, ptr %254, align 16, !tbaa !26
  %4499 = load <2 x double>, ptr %257, align 16, !tbaa !26
  %4500 = load <2 x double>, ptr %256, align 16, !tbaa !26
  %4501 = select <2 x i1> %4486, <2 x double> %4500, <2 x double> %4499
  store <2 x double> %4501, ptr %256, align 16, !tbaa !26
  %4502 = load <2 x double>, ptr %258, align 16, !tbaa !26
  %4503 = select <2 x i1> %4486, <2 x double> %4499, <2 x double> %4502
  store <2 x double> %4503, ptr %257, align 16, !tbaa !26
  %4504 = load <2 x double>, ptr %260, align 16, !tbaa !26
  %4505 = load <2 x double>, ptr %259, align 16, !tbaa !26
  %4506 = select <2 x i1> %4486, <2 x double> %4505, <2 x double> %4504
  store <2 x double> %4506, ptr %259, align 16, !tbaa !26
  %4507 = load <2 x double>, ptr %261, align 16, !tbaa !26
  %4508 = select <2 x i1> %4486, <2 x double> %4504, <2 x double> %4507
  store <2 x double> %4508, ptr %260, align 16, !tbaa !26
  %4509 = load <2 x double>, ptr %263, align 16, !tbaa !26
  %4510 = load <2 x double>, ptr %262, align 16, !tbaa !26
  %4511 = select <2 x i1> %4486, <2 x double> %4510, <2 x double> %4509
  store <2 x double> %4511, ptr %262, align 16, !tbaa !26
  %4512 = load <2 x double>, ptr %264, align 16, !tbaa !26
  %4513 = select <2 x i1> %4486, <2 x double> %4509, <2 x double> %4512
  store <2 x double> %4513, ptr %263, align 16, !tbaa !26
  %4514 = xor <2 x i64> %4426, splat (i64 -1)
  br i1 %4154, label %4515, label %4917

4515:                                             ; preds = %4485, %4873
  %4516 = phi i64 [ %4885, %4873 ], [ 0, %4485 ]
  %4517 = load ptr, ptr %143, align 8, !tbaa !28
  %4518 = getelementptr inbounds nuw %struct.Piece, ptr %4517, i64 %4516
  %4519 = getelementptr inbounds nuw i8, ptr %4518, i64 416
  %4520 = load <2 x double>, ptr %4519, align 16, !tbaa !26
  %4521 = fcmp ogt <2 x double> %4520, zeroinitializer
  %4522 = bitcast <2 x i1> %4521 to i2
  %4523 = icmp eq i2 %4522, 0
  br i1 %4523, label %4780, label %4524

4524:                                             ; preds = %4515
  %4525 = load i64, ptr %132, align 16, !tbaa !21
  %4526 = add i64 %4525, -1
  %4527 = getelementptr inbounds nuw i8, ptr %4518, i64 1168
  %4528 = load <2 x double>, ptr %4527, align 16, !tbaa !26
  %4529 = getelementptr inbounds nuw i8, ptr %4518, i64 944
  %4530 = load <2 x double>, ptr %4529, align 16, !tbaa !26
  %4531 = getelementptr inbounds nuw i8, ptr %4518, i64 2128
  %4532 = load i64, ptr %4531, align 16, !tbaa !31
  %4533 = icmp sgt i64 %4525, %4532
  br i1 %4533, label %4542, label %4534

4534:                                             ; preds = %4524
  %4535 = getelementptr inbounds nuw i8, ptr %4518, i64 2240
  %4536 = load ptr, ptr %4535, align 16, !tbaa !74
  %4537 = getelementptr inbounds <2 x double>, ptr %4536, i64 %4526
  %4538 = load <2 x double>, ptr %4537, align 16, !tbaa !26
  %4539 = getelementptr inbounds nuw i8, ptr %4518, i64 384
  %4540 = load <2 x double>, ptr %4539, align 16, !tbaa !26
  %4541 = fmul <2 x double> %4538, %4540
  br label %4551

4542:                                             ; preds = %4524
  %4543 = getelementptr inbounds nuw i8, ptr %4518, i64 384
  %4544 = load <2 x double>, ptr %4543, align 16, !tbaa !26
  %4545 = getelementptr inbounds nuw i8, ptr %4518, i64 2240
  %4546 = load ptr, ptr %4545, align 16, !tbaa !74
  %4547 = getelementptr inbounds <2 x double>, ptr %4546, i64 %4526
  %4548 = load <2 x double>, ptr %4547, align 16, !tbaa !26
  %4549 = fsub <2 x double> %4528, %4544
  %4550 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4548, <2 x double> %4549, <2 x double> %4544)
  br label %4551

4551:                                             ; preds = %4542, %4534
  %4552 = phi <2 x double> [ %4540, %4534 ], [ %4544, %4542 ]
  %4553 = phi <2 x double> [ %4541, %4534 ], [ %4550, %4542 ]
  %4554 = getelementptr inbounds nuw i8, ptr %4518, i64 752
  %4555 = load <2 x double>, ptr %4554, align 16, !tbaa !26
  %4556 = fcmp ole <2 x double> %4553, %4555
  %4557 = getelementptr inbounds nuw i8, ptr %4518, i64 1904
  %4558 = load <2 x double>, ptr %4557, align 16, !tbaa !26
  %4559 = fcmp oeq <2 x double> %4558, zeroinitializer
  %4560 = select <2 x i1> %4559, <2 x i1> %4556, <2 x i1> zeroinitializer
  %4561 = select <2 x i1> %4560, <2 x i64> %4426, <2 x i64> zeroinitializer
  %4562 = xor <2 x i64> %4561, %4426
  %4563 = fsub <2 x double> %4528, %4530
  %4564 = getelementptr inbounds nuw i8, ptr %4518, i64 384
  %4565 = fsub <2 x double> %4530, %4552
  %4566 = fdiv <2 x double> %4563, %4565
  %4567 = getelementptr inbounds nuw i8, ptr %4518, i64 2184
  %4568 = load ptr, ptr %4567, align 8, !tbaa !66
  %4569 = getelementptr inbounds <2 x double>, ptr %4568, i64 %4532
  %4570 = load <2 x double>, ptr %4569, align 16, !tbaa !26
  %4571 = getelementptr inbounds nuw i8, ptr %4518, i64 2192
  %4572 = load ptr, ptr %4571, align 16, !tbaa !49
  %4573 = getelementptr inbounds <2 x double>, ptr %4572, i64 %4532
  %4574 = load <2 x double>, ptr %4573, align 16, !tbaa !26
  %4575 = icmp eq <2 x i64> %4561, zeroinitializer
  %4576 = select <2 x i1> %4575, <2 x double> %4574, <2 x double> %4570
  store <2 x double> %4576, ptr %4573, align 16, !tbaa !26
  %4577 = load i64, ptr %4531, align 16, !tbaa !31
  %4578 = add nsw i64 %4577, 1
  %4579 = icmp slt i64 %4578, %4526
  br i1 %4579, label %4580, label %4584

4580:                                             ; preds = %4551
  %4581 = getelementptr inbounds nuw i8, ptr %4518, i64 2256
  br label %4626

4582:                                             ; preds = %4626
  %4583 = load i64, ptr %4531, align 16, !tbaa !31
  br label %4584

4584:                                             ; preds = %4582, %4551
  %4585 = phi i64 [ %4577, %4551 ], [ %4583, %4582 ]
  %4586 = phi <2 x double> [ %4570, %4551 ], [ %4631, %4582 ]
  %4587 = icmp sgt i64 %4525, %4585
  br i1 %4587, label %4595, label %4588

4588:                                             ; preds = %4584
  %4589 = getelementptr inbounds nuw i8, ptr %4518, i64 2240
  %4590 = load ptr, ptr %4589, align 16, !tbaa !74
  %4591 = getelementptr inbounds <2 x double>, ptr %4590, i64 %4526
  %4592 = load <2 x double>, ptr %4591, align 16, !tbaa !26
  %4593 = load <2 x double>, ptr %4564, align 16, !tbaa !26
  %4594 = fmul <2 x double> %4592, %4593
  br label %4603

4595:                                             ; preds = %4584
  %4596 = load <2 x double>, ptr %4564, align 16, !tbaa !26
  %4597 = getelementptr inbounds nuw i8, ptr %4518, i64 2240
  %4598 = load ptr, ptr %4597, align 16, !tbaa !74
  %4599 = getelementptr inbounds <2 x double>, ptr %4598, i64 %4526
  %4600 = load <2 x double>, ptr %4599, align 16, !tbaa !26
  %4601 = fsub <2 x double> %4530, %4596
  %4602 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4600, <2 x double> %4601, <2 x double> %4596)
  br label %4603

4603:                                             ; preds = %4595, %4588
  %4604 = phi <2 x double> [ %4594, %4588 ], [ %4602, %4595 ]
  %4605 = load ptr, ptr %4567, align 8, !tbaa !66
  %4606 = getelementptr inbounds <2 x double>, ptr %4605, i64 %4526
  %4607 = load <2 x double>, ptr %4606, align 16, !tbaa !26
  %4608 = load ptr, ptr %4571, align 16, !tbaa !49
  %4609 = getelementptr inbounds <2 x double>, ptr %4608, i64 %4526
  %4610 = fsub <2 x double> %4586, %4607
  %4611 = fsub <2 x double> %4553, %4604
  %4612 = load <2 x double>, ptr %4554, align 16, !tbaa !26
  %4613 = fsub <2 x double> %4612, %4604
  %4614 = fdiv <2 x double> %4611, %4613
  %4615 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4610, <2 x double> %4614, <2 x double> %4607)
  %4616 = load <2 x double>, ptr %4609, align 16, !tbaa !26
  %4617 = select <2 x i1> %4575, <2 x double> %4616, <2 x double> %4615
  store <2 x double> %4617, ptr %4609, align 16, !tbaa !26
  %4618 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4562)
  %4619 = icmp eq i64 %4618, 0
  br i1 %4619, label %4780, label %4620

4620:                                             ; preds = %4603
  %4621 = getelementptr inbounds nuw i8, ptr %4518, i64 2240
  %4622 = getelementptr inbounds nuw i8, ptr %4518, i64 784
  %4623 = getelementptr inbounds nuw i8, ptr %4518, i64 208
  %4624 = extractelement <2 x i64> %4562, i64 0
  %4625 = extractelement <2 x i64> %4562, i64 1
  br label %4644

4626:                                             ; preds = %4580, %4626
  %4627 = phi i64 [ %4578, %4580 ], [ %4642, %4626 ]
  %4628 = phi <2 x double> [ %4570, %4580 ], [ %4631, %4626 ]
  %4629 = load ptr, ptr %4567, align 8, !tbaa !66
  %4630 = getelementptr inbounds <2 x double>, ptr %4629, i64 %4627
  %4631 = load <2 x double>, ptr %4630, align 16, !tbaa !26
  %4632 = load ptr, ptr %4571, align 16, !tbaa !49
  %4633 = getelementptr inbounds <2 x double>, ptr %4632, i64 %4627
  %4634 = fsub <2 x double> %4628, %4631
  %4635 = load ptr, ptr %4581, align 16, !tbaa !140
  %4636 = getelementptr inbounds <2 x double>, ptr %4635, i64 %4627
  %4637 = load <2 x double>, ptr %4636, align 16, !tbaa !26
  %4638 = fmul <2 x double> %4566, %4637
  %4639 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4634, <2 x double> %4638, <2 x double> %4631)
  %4640 = load <2 x double>, ptr %4633, align 16, !tbaa !26
  %4641 = select <2 x i1> %4575, <2 x double> %4640, <2 x double> %4639
  store <2 x double> %4641, ptr %4633, align 16, !tbaa !26
  %4642 = add nsw i64 %4627, 1
  %4643 = icmp eq i64 %4642, %4526
  br i1 %4643, label %4582, label %4626, !llvm.loop !141

4644:                                             ; preds = %4620, %4779
  %4645 = phi i1 [ true, %4620 ], [ false, %4779 ]
  %4646 = phi i64 [ %4624, %4620 ], [ %4625, %4779 ]
  %4647 = phi i64 [ 0, %4620 ], [ 1, %4779 ]
  %4648 = icmp eq i64 %4646, 0
  br i1 %4648, label %4779, label %4649

4649:                                             ; preds = %4644
  %4650 = load i64, ptr %132, align 16, !tbaa !21
  %4651 = load i64, ptr %4531, align 16, !tbaa !31
  %4652 = getelementptr inbounds nuw double, ptr %4564, i64 %4647
  %4653 = load double, ptr %4652, align 8, !tbaa !43
  %4654 = getelementptr inbounds nuw double, ptr %4554, i64 %4647
  %4655 = load double, ptr %4654, align 8, !tbaa !43
  %4656 = add nsw i64 %4650, -1
  %4657 = icmp sgt i64 %4650, %4651
  br i1 %4657, label %4658, label %4779

4658:                                             ; preds = %4649
  %4659 = getelementptr inbounds nuw double, ptr %4529, i64 %4647
  %4660 = load double, ptr %4659, align 8, !tbaa !43
  %4661 = getelementptr inbounds nuw double, ptr %4527, i64 %4647
  %4662 = load double, ptr %4661, align 8, !tbaa !43
  %4663 = load ptr, ptr %4621, align 16
  %4664 = getelementptr i8, ptr %4663, i64 16
  %4665 = getelementptr double, ptr %4664, i64 %4647
  %4666 = fsub double %4660, %4653
  %4667 = getelementptr double, ptr %4663, i64 %4647
  %4668 = fsub double %4662, %4653
  %4669 = load ptr, ptr %4567, align 8, !tbaa !66
  %4670 = getelementptr double, ptr %4669, i64 %4647
  %4671 = load ptr, ptr %4571, align 16, !tbaa !49
  %4672 = getelementptr double, ptr %4671, i64 %4647
  %4673 = getelementptr <2 x double>, ptr %4667, i64 %4656
  br label %4701

4674:                                             ; preds = %4747
  %4675 = getelementptr inbounds nuw double, ptr %4557, i64 %4647
  %4676 = load double, ptr %4675, align 8, !tbaa !43
  %4677 = fcmp ogt double %4676, 0.000000e+00
  %4678 = fcmp ogt double %4758, 0.000000e+00
  %4679 = select i1 %4677, i1 %4678, i1 false
  br i1 %4679, label %4680, label %4779

4680:                                             ; preds = %4674
  %4681 = getelementptr inbounds nuw double, ptr %4622, i64 %4647
  %4682 = getelementptr inbounds nuw double, ptr %4623, i64 %4647
  %4683 = sub i64 %4650, %4651
  %4684 = add i64 %4651, 1
  %4685 = and i64 %4683, 1
  %4686 = icmp eq i64 %4685, 0
  br i1 %4686, label %4696, label %4687

4687:                                             ; preds = %4680
  %4688 = load double, ptr %4681, align 8, !tbaa !43
  %4689 = load double, ptr %4682, align 8, !tbaa !43
  %4690 = fmul double %4758, %4689
  %4691 = fdiv double %4688, %4690
  %4692 = getelementptr <2 x double>, ptr %4672, i64 %4651
  %4693 = load double, ptr %4692, align 8, !tbaa !43
  %4694 = fmul double %4693, %4691
  store double %4694, ptr %4692, align 8, !tbaa !43
  %4695 = add nsw i64 %4651, 1
  br label %4696

4696:                                             ; preds = %4687, %4680
  %4697 = phi i64 [ %4651, %4680 ], [ %4695, %4687 ]
  %4698 = icmp eq i64 %4650, %4684
  br i1 %4698, label %4779, label %4699

4699:                                             ; preds = %4696
  %4700 = getelementptr i8, ptr %4672, i64 16
  br label %4761

4701:                                             ; preds = %4747, %4658
  %4702 = phi double [ 0.000000e+00, %4658 ], [ %4758, %4747 ]
  %4703 = phi i64 [ %4656, %4658 ], [ %4759, %4747 ]
  %4704 = icmp eq i64 %4703, %4656
  br i1 %4704, label %4705, label %4708

4705:                                             ; preds = %4701
  %4706 = load double, ptr %4673, align 8, !tbaa !43
  %4707 = tail call noundef double @llvm.fmuladd.f64(double %4706, double %4666, double %4653)
  br label %4719

4708:                                             ; preds = %4701
  %4709 = getelementptr <2 x double>, ptr %4665, i64 %4703
  %4710 = load double, ptr %4709, align 8, !tbaa !43
  %4711 = tail call noundef double @llvm.fmuladd.f64(double %4710, double %4666, double %4653)
  %4712 = getelementptr <2 x double>, ptr %4667, i64 %4703
  %4713 = load double, ptr %4712, align 8, !tbaa !43
  %4714 = tail call noundef double @llvm.fmuladd.f64(double %4713, double %4666, double %4653)
  %4715 = tail call noundef double @llvm.fmuladd.f64(double %4710, double %4668, double %4653)
  %4716 = fcmp ult double %4715, %4711
  br i1 %4716, label %4717, label %4719

4717:                                             ; preds = %4708
  %4718 = add nsw i64 %4703, 1
  br label %4719

4719:                                             ; preds = %4717, %4708, %4705
  %4720 = phi double [ %4714, %4717 ], [ %4714, %4708 ], [ %4707, %4705 ]
  %4721 = phi double [ %4711, %4717 ], [ %4711, %4708 ], [ %4655, %4705 ]
  %4722 = phi i64 [ %4718, %4717 ], [ %4703, %4708 ], [ %4656, %4705 ]
  %4723 = icmp sgt i64 %4722, %4651
  br i1 %4723, label %4724, label %4747

4724:                                             ; preds = %4719
  %4725 = load ptr, ptr %4567, align 8
  %4726 = getelementptr double, ptr %4725, i64 %4647
  br label %4727

4727:                                             ; preds = %4742, %4724
  %4728 = phi i64 [ %4722, %4724 ], [ %4745, %4742 ]
  %4729 = phi double [ 0.000000e+00, %4724 ], [ %4744, %4742 ]
  %4730 = phi double [ %4721, %4724 ], [ %4743, %4742 ]
  %4731 = getelementptr <2 x double>, ptr %4667, i64 %4728
  %4732 = load double, ptr %4731, align 8, !tbaa !43
  %4733 = tail call noundef double @llvm.fmuladd.f64(double %4732, double %4668, double %4653)
  %4734 = fcmp ogt double %4733, %4720
  br i1 %4734, label %4735, label %4747

4735:                                             ; preds = %4727
  %4736 = fcmp ogt double %4730, %4733
  br i1 %4736, label %4737, label %4742

4737:                                             ; preds = %4735
  %4738 = getelementptr <2 x double>, ptr %4726, i64 %4728
  %4739 = load double, ptr %4738, align 8, !tbaa !43
  %4740 = fsub double %4730, %4733
  %4741 = tail call double @llvm.fmuladd.f64(double %4739, double %4740, double %4729)
  br label %4742

4742:                                             ; preds = %4737, %4735
  %4743 = phi double [ %4733, %4737 ], [ %4730, %4735 ]
  %4744 = phi double [ %4741, %4737 ], [ %4729, %4735 ]
  %4745 = add nsw i64 %4728, -1
  %4746 = icmp sgt i64 %4745, %4651
  br i1 %4746, label %4727, label %4747, !llvm.loop !142

4747:                                             ; preds = %4742, %4727, %4719
  %4748 = phi double [ %4721, %4719 ], [ %4730, %4727 ], [ %4743, %4742 ]
  %4749 = phi double [ 0.000000e+00, %4719 ], [ %4729, %4727 ], [ %4744, %4742 ]
  %4750 = phi i64 [ %4722, %4719 ], [ %4728, %4727 ], [ %4651, %4742 ]
  %4751 = getelementptr <2 x double>, ptr %4670, i64 %4750
  %4752 = load double, ptr %4751, align 8, !tbaa !43
  %4753 = fsub double %4748, %4720
  %4754 = tail call double @llvm.fmuladd.f64(double %4752, double %4753, double %4749)
  %4755 = fsub double %4721, %4720
  %4756 = fdiv double %4754, %4755
  %4757 = getelementptr <2 x double>, ptr %4672, i64 %4703
  store double %4756, ptr %4757, align 8, !tbaa !43
  %4758 = fadd double %4702, %4754
  %4759 = add nsw i64 %4703, -1
  %4760 = icmp sgt i64 %4703, %4651
  br i1 %4760, label %4701, label %4674, !llvm.loop !143

4761:                                             ; preds = %4761, %4699
  %4762 = phi i64 [ %4697, %4699 ], [ %4777, %4761 ]
  %4763 = load double, ptr %4681, align 8, !tbaa !43
  %4764 = load double, ptr %4682, align 8, !tbaa !43
  %4765 = fmul double %4758, %4764
  %4766 = fdiv double %4763, %4765
  %4767 = getelementptr <2 x double>, ptr %4672, i64 %4762
  %4768 = load double, ptr %4767, align 8, !tbaa !43
  %4769 = fmul double %4768, %4766
  store double %4769, ptr %4767, align 8, !tbaa !43
  %4770 = load double, ptr %4681, align 8, !tbaa !43
  %4771 = load double, ptr %4682, align 8, !tbaa !43
  %4772 = fmul double %4758, %4771
  %4773 = fdiv double %4770, %4772
  %4774 = getelementptr <2 x double>, ptr %4700, i64 %4762
  %4775 = load double, ptr %4774, align 8, !tbaa !43
  %4776 = fmul double %4775, %4773
  store double %4776, ptr %4774, align 8, !tbaa !43
  %4777 = add nsw i64 %4762, 2
  %4778 = icmp eq i64 %4777, %4650
  br i1 %4778, label %4779, label %4761, !llvm.loop !144

4779:                                             ; preds = %4696, %4761, %4674, %4649, %4644
  br i1 %4645, label %4644, label %4780, !llvm.loop !145

4780:                                             ; preds = %4603, %4779, %4515
  %4781 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %4782 = and <2 x i64> %4781, %4514
  %4783 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4782)
  %4784 = icmp eq i64 %4783, 0
  %4785 = getelementptr inbounds nuw i8, ptr %4518, i64 2152
  br i1 %4784, label %4786, label %4804

4786:                                             ; preds = %4780
  %4787 = getelementptr inbounds nuw i8, ptr %4518, i64 2160
  %4788 = getelementptr inbounds nuw i8, ptr %4518, i64 2168
  %4789 = load ptr, ptr %4788, align 8, !tbaa !35
  %4790 = load ptr, ptr %4787, align 8, !tbaa !35
  store ptr %4790, ptr %4788, align 8, !tbaa !35
  %4791 = load ptr, ptr %4785, align 8, !tbaa !35
  store ptr %4791, ptr %4787, align 8, !tbaa !35
  store ptr %4789, ptr %4785, align 8, !tbaa !35
  %4792 = getelementptr inbounds nuw i8, ptr %4518, i64 2272
  %4793 = getelementptr inbounds nuw i8, ptr %4518, i64 2280
  %4794 = getelementptr inbounds nuw i8, ptr %4518, i64 2288
  %4795 = load ptr, ptr %4794, align 8, !tbaa !35
  %4796 = load ptr, ptr %4793, align 8, !tbaa !35
  store ptr %4796, ptr %4794, align 8, !tbaa !35
  %4797 = load ptr, ptr %4792, align 8, !tbaa !35
  store ptr %4797, ptr %4793, align 8, !tbaa !35
  store ptr %4795, ptr %4792, align 8, !tbaa !35
  %4798 = getelementptr inbounds nuw i8, ptr %4518, i64 2320
  %4799 = getelementptr inbounds nuw i8, ptr %4518, i64 2328
  %4800 = getelementptr inbounds nuw i8, ptr %4518, i64 2336
  %4801 = load ptr, ptr %4800, align 8, !tbaa !35
  %4802 = load ptr, ptr %4799, align 8, !tbaa !35
  store ptr %4802, ptr %4800, align 8, !tbaa !35
  %4803 = load ptr, ptr %4798, align 8, !tbaa !35
  store ptr %4803, ptr %4799, align 8, !tbaa !35
  store ptr %4801, ptr %4798, align 8, !tbaa !35
  br label %4869

4804:                                             ; preds = %4780
  %4805 = load ptr, ptr %4785, align 8, !tbaa !59
  %4806 = getelementptr inbounds nuw i8, ptr %4518, i64 2160
  %4807 = load ptr, ptr %4806, align 16, !tbaa !48
  %4808 = getelementptr inbounds nuw i8, ptr %4518, i64 2168
  %4809 = load ptr, ptr %4808, align 8, !tbaa !58
  %4810 = load i64, ptr %132, align 16, !tbaa !21
  %4811 = icmp sgt i64 %4810, 0
  br i1 %4811, label %4812, label %4825

4812:                                             ; preds = %4804, %4812
  %4813 = phi i64 [ %4823, %4812 ], [ 0, %4804 ]
  %4814 = getelementptr inbounds nuw <2 x double>, ptr %4809, i64 %4813
  %4815 = getelementptr inbounds nuw <2 x double>, ptr %4807, i64 %4813
  %4816 = load <2 x double>, ptr %4815, align 16, !tbaa !26
  %4817 = load <2 x double>, ptr %4814, align 16, !tbaa !26
  %4818 = select <2 x i1> %4486, <2 x double> %4817, <2 x double> %4816
  store <2 x double> %4818, ptr %4814, align 16, !tbaa !26
  %4819 = getelementptr inbounds nuw <2 x double>, ptr %4805, i64 %4813
  %4820 = load <2 x double>, ptr %4819, align 16, !tbaa !26
  %4821 = load <2 x double>, ptr %4815, align 16, !tbaa !26
  %4822 = select <2 x i1> %4486, <2 x double> %4821, <2 x double> %4820
  store <2 x double> %4822, ptr %4815, align 16, !tbaa !26
  %4823 = add nuw nsw i64 %4813, 1
  %4824 = icmp eq i64 %4823, %4810
  br i1 %4824, label %4825, label %4812, !llvm.loop !146

4825:                                             ; preds = %4812, %4804
  %4826 = getelementptr inbounds nuw i8, ptr %4518, i64 2272
  %4827 = load ptr, ptr %4826, align 16, !tbaa !126
  %4828 = getelementptr inbounds nuw i8, ptr %4518, i64 2280
  %4829 = load ptr, ptr %4828, align 8, !tbaa !52
  %4830 = getelementptr inbounds nuw i8, ptr %4518, i64 2288
  %4831 = load ptr, ptr %4830, align 16, !tbaa !63
  %4832 = load i64, ptr %133, align 8, !tbaa !22
  %4833 = icmp sgt i64 %4832, 0
  br i1 %4833, label %4834, label %4869

4834:                                             ; preds = %4825, %4834
  %4835 = phi i64 [ %4845, %4834 ], [ 0, %4825 ]
  %4836 = getelementptr inbounds nuw <2 x double>, ptr %4831, i64 %4835
  %4837 = getelementptr inbounds nuw <2 x double>, ptr %4829, i64 %4835
  %4838 = load <2 x double>, ptr %4837, align 16, !tbaa !26
  %4839 = load <2 x double>, ptr %4836, align 16, !tbaa !26
  %4840 = select <2 x i1> %4486, <2 x double> %4839, <2 x double> %4838
  store <2 x double> %4840, ptr %4836, align 16, !tbaa !26
  %4841 = getelementptr inbounds nuw <2 x double>, ptr %4827, i64 %4835
  %4842 = load <2 x double>, ptr %4841, align 16, !tbaa !26
  %4843 = load <2 x double>, ptr %4837, align 16, !tbaa !26
  %4844 = select <2 x i1> %4486, <2 x double> %4843, <2 x double> %4842
  store <2 x double> %4844, ptr %4837, align 16, !tbaa !26
  %4845 = add nuw nsw i64 %4835, 1
  %4846 = icmp eq i64 %4845, %4832
  br i1 %4846, label %4847, label %4834, !llvm.loop !146

4847:                                             ; preds = %4834
  %4848 = load i64, ptr %133, align 8, !tbaa !22
  %4849 = getelementptr inbounds nuw i8, ptr %4518, i64 2320
  %4850 = load ptr, ptr %4849, align 16, !tbaa !89
  %4851 = getelementptr inbounds nuw i8, ptr %4518, i64 2328
  %4852 = load ptr, ptr %4851, align 8, !tbaa !51
  %4853 = getelementptr inbounds nuw i8, ptr %4518, i64 2336
  %4854 = load ptr, ptr %4853, align 16, !tbaa !61
  %4855 = icmp sgt i64 %4848, 0
  br i1 %4855, label %4856, label %4869

4856:                                             ; preds = %4847, %4856
  %4857 = phi i64 [ %4867, %4856 ], [ 0, %4847 ]
  %4858 = getelementptr inbounds nuw <2 x double>, ptr %4854, i64 %4857
  %4859 = getelementptr inbounds nuw <2 x double>, ptr %4852, i64 %4857
  %4860 = load <2 x double>, ptr %4859, align 16, !tbaa !26
  %4861 = load <2 x double>, ptr %4858, align 16, !tbaa !26
  %4862 = select <2 x i1> %4486, <2 x double> %4861, <2 x double> %4860
  store <2 x double> %4862, ptr %4858, align 16, !tbaa !26
  %4863 = getelementptr inbounds nuw <2 x double>, ptr %4850, i64 %4857
  %4864 = load <2 x double>, ptr %4863, align 16, !tbaa !26
  %4865 = load <2 x double>, ptr %4859, align 16, !tbaa !26
  %4866 = select <2 x i1> %4486, <2 x double> %4865, <2 x double> %4864
  store <2 x double> %4866, ptr %4859, align 16, !tbaa !26
  %4867 = add nuw nsw i64 %4857, 1
  %4868 = icmp eq i64 %4867, %4848
  br i1 %4868, label %4869, label %4856, !llvm.loop !146

4869:                                             ; preds = %4856, %4825, %4847, %4786
  %4870 = getelementptr inbounds nuw i8, ptr %4518, i64 1184
  %4871 = getelementptr inbounds nuw i8, ptr %4518, i64 960
  %4872 = getelementptr inbounds nuw i8, ptr %4518, i64 736
  br label %4888

4873:                                             ; preds = %4888
  %4874 = getelementptr inbounds nuw i8, ptr %4518, i64 2096
  %4875 = getelementptr inbounds nuw i8, ptr %4518, i64 1520
  %4876 = load <2 x double>, ptr %4875, align 16, !tbaa !26
  %4877 = fcmp ogt <2 x double> %4876, zeroinitializer
  %4878 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %4879 = fcmp une <2 x double> %4878, splat (double 2.000000e+00)
  %4880 = and <2 x i1> %4877, %4879
  %4881 = select <2 x i1> %4880, <2 x i64> %4426, <2 x i64> zeroinitializer
  %4882 = load <2 x i64>, ptr %4874, align 16, !tbaa !26
  %4883 = and <2 x i64> %4882, %4514
  %4884 = or disjoint <2 x i64> %4881, %4883
  store <2 x i64> %4884, ptr %4874, align 16, !tbaa !26
  %4885 = add nuw nsw i64 %4516, 1
  %4886 = load i64, ptr %170, align 8, !tbaa !20
  %4887 = icmp slt i64 %4885, %4886
  br i1 %4887, label %4515, label %4909, !llvm.loop !147

4888:                                             ; preds = %4888, %4869
  %4889 = phi i64 [ 0, %4869 ], [ %4907, %4888 ]
  %4890 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4870, i64 0, i64 %4889
  %4891 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4871, i64 0, i64 %4889
  %4892 = load <2 x double>, ptr %4891, align 16, !tbaa !26
  %4893 = load <2 x double>, ptr %4890, align 16, !tbaa !26
  %4894 = select <2 x i1> %4486, <2 x double> %4893, <2 x double> %4892
  store <2 x double> %4894, ptr %4890, align 16, !tbaa !26
  %4895 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4872, i64 0, i64 %4889
  %4896 = load <2 x double>, ptr %4895, align 16, !tbaa !26
  %4897 = select <2 x i1> %4486, <2 x double> %4892, <2 x double> %4896
  store <2 x double> %4897, ptr %4891, align 16, !tbaa !26
  %4898 = or disjoint i64 %4889, 1
  %4899 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4870, i64 0, i64 %4898
  %4900 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4871, i64 0, i64 %4898
  %4901 = load <2 x double>, ptr %4900, align 16, !tbaa !26
  %4902 = load <2 x double>, ptr %4899, align 16, !tbaa !26
  %4903 = select <2 x i1> %4486, <2 x double> %4902, <2 x double> %4901
  store <2 x double> %4903, ptr %4899, align 16, !tbaa !26
  %4904 = getelementptr inbounds nuw [14 x <2 x double>], ptr %4872, i64 0, i64 %4898
  %4905 = load <2 x double>, ptr %4904, align 16, !tbaa !26
  %4906 = select <2 x i1> %4486, <2 x double> %4901, <2 x double> %4905
  store <2 x double> %4906, ptr %4900, align 16, !tbaa !26
  %4907 = add nuw nsw i64 %4889, 2
  %4908 = icmp eq i64 %4907, 14
  br i1 %4908, label %4873, label %4888, !llvm.loop !148

4909:                                             ; preds = %4873
  %4910 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4911 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4912 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4913 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4914 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %4915 = fdiv <2 x double> %4912, %4123
  %4916 = icmp sgt i64 %4886, 0
  br label %4917

4917:                                             ; preds = %4485, %4909
  %4918 = phi <2 x double> [ %4915, %4909 ], [ %4133, %4485 ]
  %4919 = phi i1 [ %4916, %4909 ], [ false, %4485 ]
  %4920 = phi <2 x double> [ %4914, %4909 ], [ %4112, %4485 ]
  %4921 = phi <2 x double> [ %4913, %4909 ], [ %4414, %4485 ]
  %4922 = phi <2 x double> [ %4911, %4909 ], [ %4129, %4485 ]
  %4923 = phi <2 x double> [ %4910, %4909 ], [ %4127, %4485 ]
  %4924 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %4925 = fadd <2 x double> %4924, %4923
  %4926 = select <2 x i1> %4486, <2 x double> %4924, <2 x double> %4925
  store <2 x double> %4926, ptr %150, align 16, !tbaa !26
  %4927 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %4928 = select <2 x i1> %4486, <2 x double> %4927, <2 x double> %4923
  store <2 x double> %4928, ptr %165, align 16, !tbaa !26
  %4929 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4930 = fadd <2 x double> %4929, splat (double 1.000000e+00)
  %4931 = select <2 x i1> %4486, <2 x double> %4929, <2 x double> %4930
  store <2 x double> %4931, ptr %136, align 16, !tbaa !26
  %4932 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %4933 = fcmp olt <2 x double> %4932, %4923
  %4934 = select <2 x i1> %4486, <2 x i1> splat (i1 true), <2 x i1> %4933
  %4935 = select <2 x i1> %4934, <2 x double> %4932, <2 x double> %4923
  store <2 x double> %4935, ptr %138, align 16, !tbaa !26
  %4936 = fcmp une <2 x double> %4922, zeroinitializer
  %4937 = fcmp ueq <2 x double> %4122, zeroinitializer
  %4938 = or <2 x i1> %4937, %4936
  %4939 = fcmp olt <2 x double> %4918, splat (double 1.800000e+00)
  %4940 = select <2 x i1> %4939, <2 x double> %4918, <2 x double> splat (double 1.800000e+00)
  %4941 = select <2 x i1> %4938, <2 x double> splat (double 1.800000e+00), <2 x double> %4940
  %4942 = fcmp ogt <2 x double> %4941, splat (double 2.000000e-01)
  %4943 = select <2 x i1> %4942, <2 x double> %4941, <2 x double> splat (double 2.000000e-01)
  %4944 = fmul <2 x double> %4923, %4943
  %4945 = fmul <2 x double> %4923, splat (double 4.000000e+00)
  %4946 = fcmp olt <2 x double> %4921, %4945
  %4947 = select <2 x i1> %4946, <2 x double> %4921, <2 x double> %4945
  %4948 = fcmp ogt <2 x double> %4944, %4947
  %4949 = select <2 x i1> %4948, <2 x double> %4944, <2 x double> %4947
  %4950 = select <2 x i1> %4486, <2 x double> %4921, <2 x double> zeroinitializer
  store <2 x double> %4950, ptr %173, align 16, !tbaa !26
  %4951 = select <2 x i1> %4486, <2 x double> %4920, <2 x double> zeroinitializer
  store <2 x double> %4951, ptr %175, align 16, !tbaa !26
  %4952 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %4953 = and <2 x i64> %4952, %4514
  store <2 x i64> %4953, ptr %166, align 16, !tbaa !26
  %4954 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %4955 = and <2 x i64> %4954, %4514
  store <2 x i64> %4955, ptr %167, align 16, !tbaa !26
  %4956 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %4957 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %4958 = select <2 x i1> %4486, <2 x double> %4957, <2 x double> %4956
  store <2 x double> %4958, ptr %160, align 16, !tbaa !26
  br i1 %4919, label %4959, label %5424

4959:                                             ; preds = %4917, %5417
  %4960 = phi i64 [ %5419, %5417 ], [ 0, %4917 ]
  %4961 = phi <2 x double> [ %5418, %5417 ], [ %4949, %4917 ]
  %4962 = load ptr, ptr %143, align 8, !tbaa !28
  %4963 = getelementptr inbounds nuw %struct.Piece, ptr %4962, i64 %4960
  %4964 = getelementptr inbounds nuw i8, ptr %4963, i64 976
  %4965 = load <2 x double>, ptr %4964, align 16, !tbaa !26
  %4966 = getelementptr inbounds nuw i8, ptr %4963, i64 368
  %4967 = load <2 x double>, ptr %4966, align 16, !tbaa !26
  %4968 = fmul <2 x double> %4967, splat (double 1.001000e+00)
  %4969 = fcmp ole <2 x double> %4965, %4968
  %4970 = getelementptr inbounds nuw i8, ptr %4963, i64 400
  %4971 = load <2 x double>, ptr %4970, align 16, !tbaa !26
  %4972 = getelementptr inbounds nuw i8, ptr %4963, i64 1040
  %4973 = load <2 x double>, ptr %4972, align 16, !tbaa !26
  %4974 = fsub <2 x double> %4971, %4973
  %4975 = fmul <2 x double> %4971, splat (double 1.000000e-04)
  %4976 = fcmp ole <2 x double> %4974, %4975
  %4977 = getelementptr inbounds nuw i8, ptr %4963, i64 2080
  %4978 = load <2 x i64>, ptr %4977, align 16, !tbaa !26
  %4979 = and <2 x i64> %4978, %4426
  %4980 = getelementptr inbounds nuw i8, ptr %4963, i64 1904
  %4981 = load <2 x double>, ptr %4980, align 16, !tbaa !26
  %4982 = fcmp oeq <2 x double> %4981, zeroinitializer
  %4983 = and <2 x i1> %4969, %4982
  %4984 = fcmp oeq <2 x double> %4981, splat (double 1.000000e+00)
  %4985 = and <2 x i1> %4976, %4984
  %4986 = or <2 x i1> %4983, %4985
  %4987 = select <2 x i1> %4986, <2 x i64> %4979, <2 x i64> zeroinitializer
  %4988 = fadd <2 x double> %4981, splat (double 1.000000e+00)
  %4989 = icmp eq <2 x i64> %4987, zeroinitializer
  %4990 = select <2 x i1> %4989, <2 x double> %4981, <2 x double> %4988
  store <2 x double> %4990, ptr %4980, align 16, !tbaa !26
  %4991 = getelementptr inbounds nuw i8, ptr %4963, i64 2096
  %4992 = load <2 x i64>, ptr %4991, align 16, !tbaa !26
  %4993 = or <2 x i64> %4987, %4992
  store <2 x i64> %4993, ptr %4991, align 16, !tbaa !26
  %4994 = getelementptr inbounds nuw i8, ptr %4963, i64 224
  %4995 = load <2 x double>, ptr %4994, align 16, !tbaa !26
  %4996 = getelementptr inbounds nuw i8, ptr %4963, i64 1504
  %4997 = load <2 x double>, ptr %4996, align 16, !tbaa !26
  %4998 = getelementptr inbounds nuw i8, ptr %4963, i64 1520
  %4999 = load <2 x double>, ptr %4998, align 16, !tbaa !26
  %5000 = fadd <2 x double> %4997, %4999
  %5001 = fcmp ogt <2 x double> %5000, zeroinitializer
  %5002 = xor <2 x i64> %4978, splat (i64 -1)
  %5003 = and <2 x i64> %4426, %5002
  %5004 = fcmp une <2 x double> %4995, zeroinitializer
  %5005 = or <2 x i1> %5004, %5001
  %5006 = getelementptr inbounds nuw i8, ptr %4963, i64 992
  %5007 = load <2 x double>, ptr %5006, align 16, !tbaa !26
  %5008 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %5009 = fmul <2 x double> %4995, %5008
  %5010 = fcmp ogt <2 x double> %5009, splat (double 0x3E7AD7F29ABCAF48)
  %5011 = select <2 x i1> %5010, <2 x double> %5009, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5012 = fcmp ole <2 x double> %5007, %5011
  %5013 = select <2 x i1> %5012, <2 x i1> %5005, <2 x i1> zeroinitializer
  %5014 = select <2 x i1> %5013, <2 x i64> %5003, <2 x i64> zeroinitializer
  %5015 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5014)
  %5016 = icmp eq i64 %5015, 0
  br i1 %5016, label %5417, label %5017

5017:                                             ; preds = %4959
  %5018 = load i64, ptr %132, align 16, !tbaa !21
  %5019 = load i64, ptr %133, align 8, !tbaa !22
  %5020 = getelementptr inbounds nuw i8, ptr %4963, i64 960
  %5021 = getelementptr inbounds nuw i8, ptr %4963, i64 1168
  %5022 = load <2 x double>, ptr %5021, align 16, !tbaa !26
  %5023 = getelementptr inbounds nuw i8, ptr %4963, i64 1488
  %5024 = load <2 x double>, ptr %5023, align 16, !tbaa !26
  %5025 = getelementptr inbounds nuw i8, ptr %4963, i64 208
  %5026 = load <2 x double>, ptr %5025, align 16, !tbaa !26
  %5027 = getelementptr inbounds nuw i8, ptr %4963, i64 2192
  %5028 = load ptr, ptr %5027, align 16, !tbaa !49
  %5029 = add nsw i64 %5018, -1
  %5030 = getelementptr inbounds <2 x double>, ptr %5028, i64 %5029
  %5031 = load <2 x double>, ptr %5030, align 16, !tbaa !26
  %5032 = fmul <2 x double> %5026, %5031
  %5033 = fneg <2 x double> %5007
  %5034 = fdiv <2 x double> %5033, %5032
  %5035 = fcmp ogt <2 x double> %5034, splat (double 0x3E7AD7F29ABCAF48)
  %5036 = select <2 x i1> %5035, <2 x double> %5034, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %5037 = load <2 x double>, ptr %4963, align 16, !tbaa !26
  %5038 = fsub <2 x double> %5037, %5036
  %5039 = getelementptr inbounds nuw i8, ptr %4963, i64 640
  %5040 = load <2 x double>, ptr %5039, align 16, !tbaa !26
  %5041 = getelementptr inbounds nuw i8, ptr %4963, i64 656
  %5042 = load <2 x double>, ptr %5041, align 16, !tbaa !26
  %5043 = getelementptr inbounds nuw i8, ptr %4963, i64 672
  %5044 = load <2 x double>, ptr %5043, align 16, !tbaa !26
  %5045 = getelementptr inbounds nuw i8, ptr %4963, i64 688
  %5046 = load <2 x double>, ptr %5045, align 16, !tbaa !26
  %5047 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5038, <2 x double> %5046, <2 x double> %5044)
  %5048 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5038, <2 x double> %5047, <2 x double> %5042)
  %5049 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5038, <2 x double> %5048, <2 x double> %5040)
  %5050 = fsub <2 x double> %5022, %5049
  %5051 = getelementptr inbounds nuw i8, ptr %4963, i64 2160
  %5052 = load ptr, ptr %5051, align 16, !tbaa !48
  %5053 = getelementptr inbounds <2 x double>, ptr %5052, i64 %5029
  %5054 = load <2 x double>, ptr %5053, align 16, !tbaa !26
  %5055 = getelementptr inbounds nuw i8, ptr %4963, i64 2128
  %5056 = load i64, ptr %5055, align 16, !tbaa !31
  %5057 = icmp sgt i64 %5018, %5056
  br i1 %5057, label %5066, label %5058

5058:                                             ; preds = %5017
  %5059 = getelementptr inbounds nuw i8, ptr %4963, i64 160
  %5060 = load <2 x double>, ptr %5059, align 16, !tbaa !26
  %5061 = getelementptr inbounds nuw i8, ptr %4963, i64 2168
  %5062 = load ptr, ptr %5061, align 8, !tbaa !58
  %5063 = getelementptr inbounds <2 x double>, ptr %5062, i64 %5029
  %5064 = load <2 x double>, ptr %5063, align 16, !tbaa !26
  %5065 = fmul <2 x double> %5064, %5060
  br label %5086

5066:                                             ; preds = %5017
  %5067 = getelementptr inbounds nuw i8, ptr %4963, i64 96
  %5068 = load <2 x double>, ptr %5067, align 16, !tbaa !26
  %5069 = getelementptr inbounds nuw i8, ptr %4963, i64 112
  %5070 = load <2 x double>, ptr %5069, align 16, !tbaa !26
  %5071 = getelementptr inbounds nuw i8, ptr %4963, i64 128
  %5072 = load <2 x double>, ptr %5071, align 16, !tbaa !26
  %5073 = fmul <2 x double> %5054, %5072
  %5074 = fmul <2 x double> %5073, splat (double 0x3FD5555555555555)
  %5075 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5070, <2 x double> splat (double 5.000000e-01), <2 x double> %5074)
  %5076 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5054, <2 x double> %5075, <2 x double> %5068)
  %5077 = getelementptr inbounds nuw i8, ptr %4963, i64 2168
  %5078 = load ptr, ptr %5077, align 8, !tbaa !58
  %5079 = getelementptr inbounds <2 x double>, ptr %5078, i64 %5029
  %5080 = load <2 x double>, ptr %5079, align 16, !tbaa !26
  %5081 = fmul <2 x double> %5080, %5072
  %5082 = fmul <2 x double> %5081, splat (double 0x3FD5555555555555)
  %5083 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5070, <2 x double> splat (double 5.000000e-01), <2 x double> %5082)
  %5084 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5080, <2 x double> %5083, <2 x double> %5068)
  %5085 = fmul <2 x double> %5080, %5084
  br label %5086

5086:                                             ; preds = %5066, %5058
  %5087 = phi ptr [ %5078, %5066 ], [ %5062, %5058 ]
  %5088 = phi <2 x double> [ %5076, %5066 ], [ %5060, %5058 ]
  %5089 = phi <2 x double> [ %5085, %5066 ], [ %5065, %5058 ]
  %5090 = phi ptr [ %5077, %5066 ], [ %5061, %5058 ]
  %5091 = sitofp i64 %5019 to double
  %5092 = insertelement <2 x double> poison, double %5091, i64 0
  %5093 = shufflevector <2 x double> %5092, <2 x double> poison, <2 x i32> zeroinitializer
  %5094 = fmul <2 x double> %5054, %5088
  %5095 = fdiv <2 x double> %5036, %5093
  %5096 = getelementptr i8, ptr %5052, i64 -16
  %5097 = getelementptr i8, ptr %5028, i64 -16
  %5098 = icmp sgt i64 %5018, 0
  br i1 %5098, label %5099, label %5200

5099:                                             ; preds = %5086
  %5100 = fmul <2 x double> %5054, %5088
  %5101 = getelementptr inbounds nuw i8, ptr %4963, i64 160
  %5102 = getelementptr inbounds nuw i8, ptr %4963, i64 96
  %5103 = getelementptr inbounds nuw i8, ptr %4963, i64 112
  %5104 = getelementptr inbounds nuw i8, ptr %4963, i64 128
  %5105 = getelementptr inbounds nuw i8, ptr %4963, i64 384
  %5106 = getelementptr inbounds nuw i8, ptr %4963, i64 2240
  %5107 = icmp eq <2 x i64> %5014, zeroinitializer
  br label %5108

5108:                                             ; preds = %5099, %5187
  %5109 = phi <2 x double> [ %5054, %5099 ], [ %5168, %5187 ]
  %5110 = phi <2 x double> [ %5100, %5099 ], [ %5167, %5187 ]
  %5111 = phi <2 x double> [ %5049, %5099 ], [ %5169, %5187 ]
  %5112 = phi <2 x double> [ %5031, %5099 ], [ %5170, %5187 ]
  %5113 = phi i64 [ %5029, %5099 ], [ %5193, %5187 ]
  %5114 = icmp eq i64 %5113, 0
  br i1 %5114, label %5115, label %5119

5115:                                             ; preds = %5108
  %5116 = fdiv <2 x double> zeroinitializer, %5111
  %5117 = fsub <2 x double> %5110, %5110
  %5118 = fmul <2 x double> %5116, %5117
  br label %5164

5119:                                             ; preds = %5108
  %5120 = getelementptr <2 x double>, ptr %5096, i64 %5113
  %5121 = load <2 x double>, ptr %5120, align 16, !tbaa !26
  %5122 = load i64, ptr %5055, align 16, !tbaa !31
  %5123 = icmp sgt i64 %5113, %5122
  br i1 %5123, label %5126, label %5124

5124:                                             ; preds = %5119
  %5125 = load <2 x double>, ptr %5101, align 16, !tbaa !26
  br label %5134

5126:                                             ; preds = %5119
  %5127 = load <2 x double>, ptr %5102, align 16, !tbaa !26
  %5128 = load <2 x double>, ptr %5103, align 16, !tbaa !26
  %5129 = load <2 x double>, ptr %5104, align 16, !tbaa !26
  %5130 = fmul <2 x double> %5121, %5129
  %5131 = fmul <2 x double> %5130, splat (double 0x3FD5555555555555)
  %5132 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5128, <2 x double> splat (double 5.000000e-01), <2 x double> %5131)
  %5133 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5121, <2 x double> %5132, <2 x double> %5127)
  br label %5134

5134:                                             ; preds = %5124, %5126
  %5135 = phi <2 x double> [ %5133, %5126 ], [ %5125, %5124 ]
  %5136 = fmul <2 x double> %5121, %5135
  %5137 = icmp slt i64 %5113, %5122
  br i1 %5137, label %5138, label %5145

5138:                                             ; preds = %5134
  %5139 = load ptr, ptr %5106, align 16, !tbaa !74
  %5140 = getelementptr inbounds nuw <2 x double>, ptr %5139, i64 %5113
  %5141 = load <2 x double>, ptr %5140, align 16, !tbaa !26
  %5142 = load <2 x double>, ptr %5105, align 16, !tbaa !26
  %5143 = fmul <2 x double> %5141, %5142
  %5144 = fmul <2 x double> %5141, %5142
  br label %5154

5145:                                             ; preds = %5134
  %5146 = load <2 x double>, ptr %5105, align 16, !tbaa !26
  %5147 = load ptr, ptr %5106, align 16, !tbaa !74
  %5148 = getelementptr inbounds nuw <2 x double>, ptr %5147, i64 %5113
  %5149 = load <2 x double>, ptr %5148, align 16, !tbaa !26
  %5150 = fsub <2 x double> %5049, %5146
  %5151 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5149, <2 x double> %5150, <2 x double> %5146)
  %5152 = fsub <2 x double> %5022, %5146
  %5153 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5149, <2 x double> %5152, <2 x double> %5146)
  br label %5154

5154:                                             ; preds = %5145, %5138
  %5155 = phi <2 x double> [ %5143, %5138 ], [ %5151, %5145 ]
  %5156 = phi <2 x double> [ %5144, %5138 ], [ %5153, %5145 ]
  %5157 = fsub <2 x double> %5156, %5155
  %5158 = fsub <2 x double> %5111, %5155
  %5159 = fdiv <2 x double> %5157, %5158
  %5160 = fsub <2 x double> %5136, %5110
  %5161 = fmul <2 x double> %5160, %5159
  %5162 = getelementptr <2 x double>, ptr %5097, i64 %5113
  %5163 = load <2 x double>, ptr %5162, align 16, !tbaa !26
  br label %5164

5164:                                             ; preds = %5154, %5115
  %5165 = phi <2 x double> [ %5161, %5154 ], [ %5118, %5115 ]
  %5166 = phi <2 x double> [ %5159, %5154 ], [ %5116, %5115 ]
  %5167 = phi <2 x double> [ %5136, %5154 ], [ %5110, %5115 ]
  %5168 = phi <2 x double> [ %5121, %5154 ], [ %5109, %5115 ]
  %5169 = phi <2 x double> [ %5155, %5154 ], [ zeroinitializer, %5115 ]
  %5170 = phi <2 x double> [ %5163, %5154 ], [ %5112, %5115 ]
  %5171 = getelementptr inbounds nuw <2 x double>, ptr %5028, i64 %5113
  %5172 = fsub <2 x double> %5170, %5112
  %5173 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5172, <2 x double> %5166, <2 x double> %5112)
  %5174 = load <2 x double>, ptr %5171, align 16, !tbaa !26
  %5175 = select <2 x i1> %5107, <2 x double> %5174, <2 x double> %5173
  store <2 x double> %5175, ptr %5171, align 16, !tbaa !26
  %5176 = getelementptr inbounds nuw <2 x double>, ptr %5052, i64 %5113
  %5177 = load i64, ptr %5055, align 16, !tbaa !31
  %5178 = icmp slt i64 %5113, %5177
  br i1 %5178, label %5179, label %5181

5179:                                             ; preds = %5164
  %5180 = load <2 x double>, ptr %5101, align 16, !tbaa !26
  br label %5187

5181:                                             ; preds = %5164
  %5182 = load <2 x double>, ptr %5102, align 16, !tbaa !26
  %5183 = load <2 x double>, ptr %5103, align 16, !tbaa !26
  %5184 = load <2 x double>, ptr %5104, align 16, !tbaa !26
  %5185 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5109, <2 x double> %5184, <2 x double> %5183)
  %5186 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5109, <2 x double> %5185, <2 x double> %5182)
  br label %5187

5187:                                             ; preds = %5181, %5179
  %5188 = phi <2 x double> [ %5180, %5179 ], [ %5186, %5181 ]
  %5189 = fdiv <2 x double> %5165, %5188
  %5190 = fadd <2 x double> %5109, %5189
  %5191 = load <2 x double>, ptr %5176, align 16, !tbaa !26
  %5192 = select <2 x i1> %5107, <2 x double> %5191, <2 x double> %5190
  store <2 x double> %5192, ptr %5176, align 16, !tbaa !26
  %5193 = add nsw i64 %5113, -1
  %5194 = icmp sgt i64 %5113, 0
  br i1 %5194, label %5108, label %5195, !llvm.loop !149

5195:                                             ; preds = %5187
  %5196 = load ptr, ptr %5090, align 8, !tbaa !58
  %5197 = load i64, ptr %132, align 16, !tbaa !21
  %5198 = load i64, ptr %5055, align 16, !tbaa !31
  %5199 = add nsw i64 %5197, -1
  br label %5200

5200:                                             ; preds = %5195, %5086
  %5201 = phi i64 [ %5199, %5195 ], [ %5029, %5086 ]
  %5202 = phi i64 [ %5198, %5195 ], [ %5056, %5086 ]
  %5203 = phi i64 [ %5197, %5195 ], [ %5018, %5086 ]
  %5204 = phi ptr [ %5196, %5195 ], [ %5087, %5086 ]
  %5205 = getelementptr inbounds <2 x double>, ptr %5204, i64 %5201
  %5206 = load <2 x double>, ptr %5205, align 16, !tbaa !26
  %5207 = icmp sgt i64 %5203, %5202
  br i1 %5207, label %5211, label %5208

5208:                                             ; preds = %5200
  %5209 = getelementptr inbounds nuw i8, ptr %4963, i64 160
  %5210 = load <2 x double>, ptr %5209, align 16, !tbaa !26
  br label %5222

5211:                                             ; preds = %5200
  %5212 = getelementptr inbounds nuw i8, ptr %4963, i64 96
  %5213 = load <2 x double>, ptr %5212, align 16, !tbaa !26
  %5214 = getelementptr inbounds nuw i8, ptr %4963, i64 112
  %5215 = load <2 x double>, ptr %5214, align 16, !tbaa !26
  %5216 = getelementptr inbounds nuw i8, ptr %4963, i64 128
  %5217 = load <2 x double>, ptr %5216, align 16, !tbaa !26
  %5218 = fmul <2 x double> %5206, %5217
  %5219 = fmul <2 x double> %5218, splat (double 0x3FD5555555555555)
  %5220 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5215, <2 x double> splat (double 5.000000e-01), <2 x double> %5219)
  %5221 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5206, <2 x double> %5220, <2 x double> %5213)
  br label %5222

5222:                                             ; preds = %5211, %5208
  %5223 = phi <2 x double> [ %5210, %5208 ], [ %5221, %5211 ]
  %5224 = getelementptr i8, ptr %5204, i64 -16
  %5225 = icmp sgt i64 %5203, 0
  br i1 %5225, label %5226, label %5235

5226:                                             ; preds = %5222
  %5227 = fmul <2 x double> %5206, %5223
  %5228 = getelementptr inbounds nuw i8, ptr %4963, i64 160
  %5229 = getelementptr inbounds nuw i8, ptr %4963, i64 96
  %5230 = getelementptr inbounds nuw i8, ptr %4963, i64 112
  %5231 = getelementptr inbounds nuw i8, ptr %4963, i64 128
  %5232 = getelementptr inbounds nuw i8, ptr %4963, i64 384
  %5233 = getelementptr inbounds nuw i8, ptr %4963, i64 2240
  %5234 = icmp eq <2 x i64> %5014, zeroinitializer
  br label %5243

5235:                                             ; preds = %5307, %5222
  %5236 = icmp sgt i64 %5019, 0
  br i1 %5236, label %5237, label %5315

5237:                                             ; preds = %5235
  %5238 = getelementptr inbounds nuw i8, ptr %4963, i64 2328
  %5239 = icmp eq <2 x i64> %5014, zeroinitializer
  %5240 = getelementptr inbounds nuw i8, ptr %4963, i64 2336
  %5241 = getelementptr inbounds nuw i8, ptr %4963, i64 2280
  %5242 = getelementptr inbounds nuw i8, ptr %4963, i64 2288
  br label %5386

5243:                                             ; preds = %5226, %5307
  %5244 = phi <2 x double> [ %5206, %5226 ], [ %5290, %5307 ]
  %5245 = phi <2 x double> [ %5227, %5226 ], [ %5291, %5307 ]
  %5246 = phi <2 x double> [ %5049, %5226 ], [ %5289, %5307 ]
  %5247 = phi i64 [ %5201, %5226 ], [ %5313, %5307 ]
  %5248 = icmp eq i64 %5247, 0
  %5249 = load i64, ptr %5055, align 16, !tbaa !31
  br i1 %5248, label %5288, label %5250

5250:                                             ; preds = %5243
  %5251 = getelementptr <2 x double>, ptr %5224, i64 %5247
  %5252 = load <2 x double>, ptr %5251, align 16, !tbaa !26
  %5253 = icmp sgt i64 %5247, %5249
  br i1 %5253, label %5256, label %5254

5254:                                             ; preds = %5250
  %5255 = load <2 x double>, ptr %5228, align 16, !tbaa !26
  br label %5264

5256:                                             ; preds = %5250
  %5257 = load <2 x double>, ptr %5229, align 16, !tbaa !26
  %5258 = load <2 x double>, ptr %5230, align 16, !tbaa !26
  %5259 = load <2 x double>, ptr %5231, align 16, !tbaa !26
  %5260 = fmul <2 x double> %5252, %5259
  %5261 = fmul <2 x double> %5260, splat (double 0x3FD5555555555555)
  %5262 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5258, <2 x double> splat (double 5.000000e-01), <2 x double> %5261)
  %5263 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5252, <2 x double> %5262, <2 x double> %5257)
  br label %5264

5264:                                             ; preds = %5254, %5256
  %5265 = phi <2 x double> [ %5263, %5256 ], [ %5255, %5254 ]
  %5266 = fmul <2 x double> %5252, %5265
  %5267 = icmp slt i64 %5247, %5249
  br i1 %5267, label %5268, label %5275

5268:                                             ; preds = %5264
  %5269 = load ptr, ptr %5233, align 16, !tbaa !74
  %5270 = getelementptr inbounds nuw <2 x double>, ptr %5269, i64 %5247
  %5271 = load <2 x double>, ptr %5270, align 16, !tbaa !26
  %5272 = load <2 x double>, ptr %5232, align 16, !tbaa !26
  %5273 = fmul <2 x double> %5271, %5272
  %5274 = fmul <2 x double> %5271, %5272
  br label %5284

5275:                                             ; preds = %5264
  %5276 = load <2 x double>, ptr %5232, align 16, !tbaa !26
  %5277 = load ptr, ptr %5233, align 16, !tbaa !74
  %5278 = getelementptr inbounds nuw <2 x double>, ptr %5277, i64 %5247
  %5279 = load <2 x double>, ptr %5278, align 16, !tbaa !26
  %5280 = fsub <2 x double> %5049, %5276
  %5281 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5279, <2 x double> %5280, <2 x double> %5276)
  %5282 = fsub <2 x double> %5022, %5276
  %5283 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5279, <2 x double> %5282, <2 x double> %5276)
  br label %5284

5284:                                             ; preds = %5275, %5268
  %5285 = phi <2 x double> [ %5273, %5268 ], [ %5281, %5275 ]
  %5286 = phi <2 x double> [ %5274, %5268 ], [ %5283, %5275 ]
  %5287 = fsub <2 x double> %5286, %5285
  br label %5288

5288:                                             ; preds = %5243, %5284
  %5289 = phi <2 x double> [ %5285, %5284 ], [ zeroinitializer, %5243 ]
  %5290 = phi <2 x double> [ %5252, %5284 ], [ %5244, %5243 ]
  %5291 = phi <2 x double> [ %5266, %5284 ], [ %5245, %5243 ]
  %5292 = phi <2 x double> [ %5287, %5284 ], [ zeroinitializer, %5243 ]
  %5293 = fsub <2 x double> %5246, %5289
  %5294 = fdiv <2 x double> %5292, %5293
  %5295 = fsub <2 x double> %5291, %5245
  %5296 = fmul <2 x double> %5295, %5294
  %5297 = getelementptr inbounds nuw <2 x double>, ptr %5204, i64 %5247
  %5298 = icmp slt i64 %5247, %5249
  br i1 %5298, label %5299, label %5301

5299:                                             ; preds = %5288
  %5300 = load <2 x double>, ptr %5228, align 16, !tbaa !26
  br label %5307

5301:                                             ; preds = %5288
  %5302 = load <2 x double>, ptr %5229, align 16, !tbaa !26
  %5303 = load <2 x double>, ptr %5230, align 16, !tbaa !26
  %5304 = load <2 x double>, ptr %5231, align 16, !tbaa !26
  %5305 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5244, <2 x double> %5304, <2 x double> %5303)
  %5306 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5244, <2 x double> %5305, <2 x double> %5302)
  br label %5307

5307:                                             ; preds = %5301, %5299
  %5308 = phi <2 x double> [ %5300, %5299 ], [ %5306, %5301 ]
  %5309 = fdiv <2 x double> %5296, %5308
  %5310 = fadd <2 x double> %5244, %5309
  %5311 = load <2 x double>, ptr %5297, align 16, !tbaa !26
  %5312 = select <2 x i1> %5234, <2 x double> %5311, <2 x double> %5310
  store <2 x double> %5312, ptr %5297, align 16, !tbaa !26
  %5313 = add nsw i64 %5247, -1
  %5314 = icmp sgt i64 %5247, 0
  br i1 %5314, label %5243, label %5235, !llvm.loop !149

5315:                                             ; preds = %5386, %5235
  %5316 = getelementptr inbounds nuw i8, ptr %4963, i64 2328
  %5317 = load ptr, ptr %5316, align 8, !tbaa !51
  %5318 = getelementptr inbounds <2 x double>, ptr %5317, i64 %5019
  %5319 = getelementptr inbounds nuw i8, ptr %4963, i64 352
  %5320 = load <2 x double>, ptr %5319, align 16, !tbaa !26
  %5321 = load <2 x double>, ptr %5318, align 16, !tbaa !26
  %5322 = icmp eq <2 x i64> %5014, zeroinitializer
  %5323 = select <2 x i1> %5322, <2 x double> %5321, <2 x double> %5320
  store <2 x double> %5323, ptr %5318, align 16, !tbaa !26
  %5324 = getelementptr inbounds nuw i8, ptr %4963, i64 2336
  %5325 = load ptr, ptr %5324, align 16, !tbaa !61
  %5326 = getelementptr inbounds <2 x double>, ptr %5325, i64 %5019
  %5327 = load <2 x double>, ptr %5319, align 16, !tbaa !26
  %5328 = load <2 x double>, ptr %5326, align 16, !tbaa !26
  %5329 = select <2 x i1> %5322, <2 x double> %5328, <2 x double> %5327
  store <2 x double> %5329, ptr %5326, align 16, !tbaa !26
  %5330 = getelementptr inbounds nuw i8, ptr %4963, i64 1184
  %5331 = fneg <2 x double> %5050
  %5332 = getelementptr inbounds nuw i8, ptr %4963, i64 192
  %5333 = load <2 x double>, ptr %5020, align 16, !tbaa !26
  %5334 = select <2 x i1> %5322, <2 x double> %5333, <2 x double> %5038
  store <2 x double> %5334, ptr %5020, align 16, !tbaa !26
  %5335 = getelementptr inbounds nuw i8, ptr %4963, i64 976
  %5336 = load <2 x double>, ptr %5335, align 16, !tbaa !26
  %5337 = select <2 x i1> %5322, <2 x double> %5336, <2 x double> %5049
  store <2 x double> %5337, ptr %5335, align 16, !tbaa !26
  %5338 = getelementptr inbounds nuw i8, ptr %4963, i64 1168
  %5339 = load <2 x double>, ptr %5338, align 16, !tbaa !26
  %5340 = select <2 x i1> %5322, <2 x double> %5339, <2 x double> %5049
  store <2 x double> %5340, ptr %5338, align 16, !tbaa !26
  %5341 = getelementptr inbounds nuw i8, ptr %4963, i64 1008
  %5342 = load <2 x double>, ptr %5341, align 16, !tbaa !26
  %5343 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5331, <2 x double> %5032, <2 x double> %5342)
  %5344 = select <2 x i1> %5322, <2 x double> %5342, <2 x double> %5343
  store <2 x double> %5344, ptr %5341, align 16, !tbaa !26
  %5345 = getelementptr inbounds nuw i8, ptr %4963, i64 992
  %5346 = load <2 x double>, ptr %5345, align 16, !tbaa !26
  %5347 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5050, <2 x double> %5032, <2 x double> %5346)
  %5348 = select <2 x i1> %5322, <2 x double> %5346, <2 x double> %5347
  store <2 x double> %5348, ptr %5345, align 16, !tbaa !26
  %5349 = getelementptr inbounds nuw i8, ptr %4963, i64 1072
  %5350 = load <2 x double>, ptr %5349, align 16, !tbaa !26
  %5351 = load <2 x double>, ptr %5332, align 16, !tbaa !26
  %5352 = fneg <2 x double> %5351
  %5353 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5352, <2 x double> %5024, <2 x double> %5094)
  %5354 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5050, <2 x double> %5353, <2 x double> %5350)
  %5355 = select <2 x i1> %5322, <2 x double> %5350, <2 x double> %5354
  store <2 x double> %5355, ptr %5349, align 16, !tbaa !26
  %5356 = load <2 x double>, ptr %5330, align 16, !tbaa !26
  %5357 = select <2 x i1> %5322, <2 x double> %5356, <2 x double> %5038
  store <2 x double> %5357, ptr %5330, align 16, !tbaa !26
  %5358 = getelementptr inbounds nuw i8, ptr %4963, i64 1200
  %5359 = load <2 x double>, ptr %5358, align 16, !tbaa !26
  %5360 = select <2 x i1> %5322, <2 x double> %5359, <2 x double> %5049
  store <2 x double> %5360, ptr %5358, align 16, !tbaa !26
  %5361 = getelementptr inbounds nuw i8, ptr %4963, i64 1392
  %5362 = load <2 x double>, ptr %5361, align 16, !tbaa !26
  %5363 = select <2 x i1> %5322, <2 x double> %5362, <2 x double> %5049
  store <2 x double> %5363, ptr %5361, align 16, !tbaa !26
  %5364 = getelementptr inbounds nuw i8, ptr %4963, i64 1232
  %5365 = load <2 x double>, ptr %5364, align 16, !tbaa !26
  %5366 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5331, <2 x double> %5032, <2 x double> %5365)
  %5367 = select <2 x i1> %5322, <2 x double> %5365, <2 x double> %5366
  store <2 x double> %5367, ptr %5364, align 16, !tbaa !26
  %5368 = getelementptr inbounds nuw i8, ptr %4963, i64 1216
  %5369 = load <2 x double>, ptr %5368, align 16, !tbaa !26
  %5370 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5050, <2 x double> %5032, <2 x double> %5369)
  %5371 = select <2 x i1> %5322, <2 x double> %5369, <2 x double> %5370
  store <2 x double> %5371, ptr %5368, align 16, !tbaa !26
  %5372 = getelementptr inbounds nuw i8, ptr %4963, i64 1296
  %5373 = load <2 x double>, ptr %5372, align 16, !tbaa !26
  %5374 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5352, <2 x double> %5024, <2 x double> %5089)
  %5375 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5050, <2 x double> %5374, <2 x double> %5373)
  %5376 = select <2 x i1> %5322, <2 x double> %5373, <2 x double> %5375
  store <2 x double> %5376, ptr %5372, align 16, !tbaa !26
  %5377 = load <2 x i64>, ptr %4977, align 16, !tbaa !26
  %5378 = or <2 x i64> %5377, %5014
  store <2 x i64> %5378, ptr %4977, align 16, !tbaa !26
  %5379 = load <2 x double>, ptr %226, align 16, !tbaa !26
  %5380 = fmul <2 x double> %5379, splat (double 4.000000e+01)
  %5381 = fcmp olt <2 x double> %4961, %5380
  %5382 = select <2 x i1> %5381, <2 x double> %4961, <2 x double> %5380
  %5383 = icmp ne <2 x i64> %5014, zeroinitializer
  %5384 = select <2 x i1> %5004, <2 x i1> %5383, <2 x i1> zeroinitializer
  %5385 = select <2 x i1> %5384, <2 x double> %5382, <2 x double> %4961
  br label %5417

5386:                                             ; preds = %5237, %5386
  %5387 = phi i64 [ 0, %5237 ], [ %5415, %5386 ]
  %5388 = uitofp nneg i64 %5387 to double
  %5389 = insertelement <2 x double> poison, double %5388, i64 0
  %5390 = shufflevector <2 x double> %5389, <2 x double> poison, <2 x i32> zeroinitializer
  %5391 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5390, <2 x double> %5095, <2 x double> %5038)
  %5392 = load <2 x double>, ptr %5039, align 16, !tbaa !26
  %5393 = load <2 x double>, ptr %5041, align 16, !tbaa !26
  %5394 = load <2 x double>, ptr %5043, align 16, !tbaa !26
  %5395 = load <2 x double>, ptr %5045, align 16, !tbaa !26
  %5396 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5391, <2 x double> %5395, <2 x double> %5394)
  %5397 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5391, <2 x double> %5396, <2 x double> %5393)
  %5398 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5391, <2 x double> %5397, <2 x double> %5392)
  %5399 = load ptr, ptr %5238, align 8, !tbaa !51
  %5400 = getelementptr inbounds nuw <2 x double>, ptr %5399, i64 %5387
  %5401 = load <2 x double>, ptr %5400, align 16, !tbaa !26
  %5402 = select <2 x i1> %5239, <2 x double> %5401, <2 x double> %5398
  store <2 x double> %5402, ptr %5400, align 16, !tbaa !26
  %5403 = load ptr, ptr %5240, align 16, !tbaa !61
  %5404 = getelementptr inbounds nuw <2 x double>, ptr %5403, i64 %5387
  %5405 = load <2 x double>, ptr %5404, align 16, !tbaa !26
  %5406 = select <2 x i1> %5239, <2 x double> %5405, <2 x double> %5398
  store <2 x double> %5406, ptr %5404, align 16, !tbaa !26
  %5407 = load ptr, ptr %5241, align 8, !tbaa !52
  %5408 = getelementptr inbounds nuw <2 x double>, ptr %5407, i64 %5387
  %5409 = load <2 x double>, ptr %5408, align 16, !tbaa !26
  %5410 = select <2 x i1> %5239, <2 x double> %5409, <2 x double> %5024
  store <2 x double> %5410, ptr %5408, align 16, !tbaa !26
  %5411 = load ptr, ptr %5242, align 16, !tbaa !63
  %5412 = getelementptr inbounds nuw <2 x double>, ptr %5411, i64 %5387
  %5413 = load <2 x double>, ptr %5412, align 16, !tbaa !26
  %5414 = select <2 x i1> %5239, <2 x double> %5413, <2 x double> %5024
  store <2 x double> %5414, ptr %5412, align 16, !tbaa !26
  %5415 = add nuw nsw i64 %5387, 1
  %5416 = icmp eq i64 %5415, %5019
  br i1 %5416, label %5315, label %5386, !llvm.loop !150

5417:                                             ; preds = %5315, %4959
  %5418 = phi <2 x double> [ %5385, %5315 ], [ %4961, %4959 ]
  %5419 = add nuw nsw i64 %4960, 1
  %5420 = load i64, ptr %170, align 8, !tbaa !20
  %5421 = icmp slt i64 %5419, %5420
  br i1 %5421, label %4959, label %5422, !llvm.loop !151

5422:                                             ; preds = %5417
  %5423 = load <2 x double>, ptr %150, align 16, !tbaa !26
  br label %5424

5424:                                             ; preds = %5422, %4917
  %5425 = phi <2 x double> [ %4926, %4917 ], [ %5423, %5422 ]
  %5426 = phi <2 x double> [ %4949, %4917 ], [ %5418, %5422 ]
  %5427 = load <2 x double>, ptr %153, align 16, !tbaa !26
  %5428 = select <2 x i1> %4486, <2 x double> %5427, <2 x double> %5426
  store <2 x double> %5428, ptr %153, align 16, !tbaa !26
  %5429 = load ptr, ptr %227, align 16, !tbaa !39
  %5430 = getelementptr inbounds nuw i8, ptr %5429, i64 16
  store <2 x double> %5425, ptr %5429, align 16, !tbaa !26
  %5431 = load <2 x double>, ptr %228, align 16, !tbaa !26
  %5432 = getelementptr inbounds nuw i8, ptr %5429, i64 32
  store <2 x double> %5431, ptr %5430, align 16, !tbaa !26
  %5433 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %5434 = getelementptr inbounds nuw i8, ptr %5429, i64 48
  store <2 x double> %5433, ptr %5432, align 16, !tbaa !26
  %5435 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %5436 = getelementptr inbounds nuw i8, ptr %5429, i64 64
  store <2 x double> %5435, ptr %5434, align 16, !tbaa !26
  %5437 = load i64, ptr %170, align 8, !tbaa !20
  %5438 = icmp sgt i64 %5437, 0
  br i1 %5438, label %5443, label %5439

5439:                                             ; preds = %5443, %5424
  %5440 = phi ptr [ %5436, %5424 ], [ %5449, %5443 ]
  %5441 = load i64, ptr %141, align 8, !tbaa !45
  %5442 = icmp eq i64 %5441, 0
  br i1 %5442, label %5578, label %5453

5443:                                             ; preds = %5424, %5443
  %5444 = phi ptr [ %5449, %5443 ], [ %5436, %5424 ]
  %5445 = phi i64 [ %5450, %5443 ], [ 0, %5424 ]
  %5446 = load ptr, ptr %143, align 8, !tbaa !28
  %5447 = getelementptr inbounds nuw %struct.Piece, ptr %5446, i64 %5445, i32 34
  %5448 = load <2 x double>, ptr %5447, align 16, !tbaa !26
  %5449 = getelementptr inbounds nuw i8, ptr %5444, i64 16
  store <2 x double> %5448, ptr %5444, align 16, !tbaa !26
  %5450 = add nuw nsw i64 %5445, 1
  %5451 = load i64, ptr %170, align 8, !tbaa !20
  %5452 = icmp slt i64 %5450, %5451
  br i1 %5452, label %5443, label %5439, !llvm.loop !152

5453:                                             ; preds = %5439
  %5454 = load <2 x double>, ptr %212, align 16, !tbaa !26
  %5455 = getelementptr inbounds nuw i8, ptr %5440, i64 16
  store <2 x double> %5454, ptr %5440, align 16, !tbaa !26
  %5456 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %5457 = getelementptr inbounds nuw i8, ptr %5440, i64 32
  store <2 x double> %5456, ptr %5455, align 16, !tbaa !26
  %5458 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %5459 = load <2 x double>, ptr %207, align 16, !tbaa !26
  %5460 = fsub <2 x double> %5458, %5459
  %5461 = fcmp ogt <2 x double> %5460, zeroinitializer
  %5462 = select <2 x i1> %5461, <2 x double> %5460, <2 x double> zeroinitializer
  store <2 x double> %5462, ptr %5457, align 16, !tbaa !26
  %5463 = load i64, ptr %170, align 8, !tbaa !20
  %5464 = icmp sgt i64 %5463, 0
  br i1 %5464, label %5465, label %5578

5465:                                             ; preds = %5453
  %5466 = getelementptr inbounds nuw i8, ptr %5440, i64 48
  br label %5467

5467:                                             ; preds = %5465, %5467
  %5468 = phi ptr [ %5574, %5467 ], [ %5466, %5465 ]
  %5469 = phi i64 [ %5575, %5467 ], [ 0, %5465 ]
  %5470 = load ptr, ptr %143, align 8, !tbaa !28
  %5471 = getelementptr inbounds nuw %struct.Piece, ptr %5470, i64 %5469
  %5472 = getelementptr inbounds nuw i8, ptr %5471, i64 2160
  %5473 = load ptr, ptr %5472, align 16, !tbaa !48
  %5474 = load i64, ptr %132, align 16, !tbaa !21
  %5475 = getelementptr <2 x double>, ptr %5473, i64 %5474
  %5476 = getelementptr i8, ptr %5475, i64 -16
  %5477 = load <2 x double>, ptr %5476, align 16, !tbaa !26
  %5478 = getelementptr inbounds nuw i8, ptr %5471, i64 1808
  %5479 = load <2 x double>, ptr %5478, align 16, !tbaa !26
  %5480 = getelementptr inbounds nuw i8, ptr %5471, i64 1488
  %5481 = load <2 x double>, ptr %5480, align 16, !tbaa !26
  %5482 = fsub <2 x double> %5481, %5477
  %5483 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5479, <2 x double> %5482, <2 x double> %5477)
  %5484 = getelementptr inbounds nuw i8, ptr %5468, i64 16
  store <2 x double> %5483, ptr %5468, align 16, !tbaa !26
  %5485 = getelementptr inbounds nuw i8, ptr %5471, i64 1696
  %5486 = load <2 x double>, ptr %5485, align 16, !tbaa !26
  %5487 = getelementptr inbounds nuw i8, ptr %5468, i64 32
  store <2 x double> %5486, ptr %5484, align 16, !tbaa !26
  %5488 = load <2 x double>, ptr %5471, align 16, !tbaa !26
  %5489 = getelementptr inbounds nuw i8, ptr %5471, i64 960
  %5490 = load <2 x double>, ptr %5489, align 16, !tbaa !26
  %5491 = fsub <2 x double> %5488, %5490
  %5492 = getelementptr inbounds nuw i8, ptr %5468, i64 48
  store <2 x double> %5491, ptr %5487, align 16, !tbaa !26
  %5493 = getelementptr inbounds nuw i8, ptr %5471, i64 1040
  %5494 = load <2 x double>, ptr %5493, align 16, !tbaa !26
  %5495 = getelementptr inbounds nuw i8, ptr %5468, i64 64
  store <2 x double> %5494, ptr %5492, align 16, !tbaa !26
  %5496 = getelementptr inbounds nuw i8, ptr %5471, i64 1024
  %5497 = load <2 x double>, ptr %5496, align 16, !tbaa !26
  %5498 = getelementptr inbounds nuw i8, ptr %5468, i64 80
  store <2 x double> %5497, ptr %5495, align 16, !tbaa !26
  %5499 = getelementptr inbounds nuw i8, ptr %5471, i64 992
  %5500 = load <2 x double>, ptr %5499, align 16, !tbaa !26
  %5501 = getelementptr inbounds nuw i8, ptr %5468, i64 96
  store <2 x double> %5500, ptr %5498, align 16, !tbaa !26
  %5502 = getelementptr inbounds nuw i8, ptr %5471, i64 1056
  %5503 = load <2 x double>, ptr %5502, align 16, !tbaa !26
  %5504 = getelementptr inbounds nuw i8, ptr %5468, i64 112
  store <2 x double> %5503, ptr %5501, align 16, !tbaa !26
  %5505 = getelementptr inbounds nuw i8, ptr %5471, i64 2280
  %5506 = load i64, ptr %133, align 8, !tbaa !22
  %5507 = sitofp i64 %5506 to double
  %5508 = tail call double @llvm.fmuladd.f64(double %5507, double 7.500000e-01, double -5.000000e-01)
  %5509 = fcmp ogt double %5508, 0.000000e+00
  %5510 = select i1 %5509, double %5508, double 0.000000e+00
  %5511 = fptosi double %5510 to i64
  %5512 = add nsw i64 %5506, -2
  %5513 = tail call i64 @llvm.smin.i64(i64 %5512, i64 %5511)
  %5514 = sitofp i64 %5513 to double
  %5515 = fsub double %5508, %5514
  %5516 = fsub double 1.000000e+00, %5515
  %5517 = insertelement <2 x double> poison, double %5516, i64 0
  %5518 = shufflevector <2 x double> %5517, <2 x double> poison, <2 x i32> zeroinitializer
  %5519 = load ptr, ptr %5505, align 8, !tbaa !52
  %5520 = getelementptr inbounds <2 x double>, ptr %5519, i64 %5513
  %5521 = load <2 x double>, ptr %5520, align 16, !tbaa !26
  %5522 = insertelement <2 x double> poison, double %5515, i64 0
  %5523 = shufflevector <2 x double> %5522, <2 x double> poison, <2 x i32> zeroinitializer
  %5524 = getelementptr i8, ptr %5520, i64 16
  %5525 = load <2 x double>, ptr %5524, align 16, !tbaa !26
  %5526 = fmul <2 x double> %5525, %5523
  %5527 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5518, <2 x double> %5521, <2 x double> %5526)
  store <2 x double> %5527, ptr %5504, align 16, !tbaa !26
  %5528 = load i64, ptr %133, align 8, !tbaa !22
  %5529 = sitofp i64 %5528 to double
  %5530 = tail call double @llvm.fmuladd.f64(double %5529, double 5.000000e-01, double -5.000000e-01)
  %5531 = fcmp ogt double %5530, 0.000000e+00
  %5532 = select i1 %5531, double %5530, double 0.000000e+00
  %5533 = fptosi double %5532 to i64
  %5534 = add nsw i64 %5528, -2
  %5535 = tail call i64 @llvm.smin.i64(i64 %5534, i64 %5533)
  %5536 = sitofp i64 %5535 to double
  %5537 = fsub double %5530, %5536
  %5538 = fsub double 1.000000e+00, %5537
  %5539 = insertelement <2 x double> poison, double %5538, i64 0
  %5540 = shufflevector <2 x double> %5539, <2 x double> poison, <2 x i32> zeroinitializer
  %5541 = load ptr, ptr %5505, align 8, !tbaa !52
  %5542 = getelementptr inbounds <2 x double>, ptr %5541, i64 %5535
  %5543 = load <2 x double>, ptr %5542, align 16, !tbaa !26
  %5544 = insertelement <2 x double> poison, double %5537, i64 0
  %5545 = shufflevector <2 x double> %5544, <2 x double> poison, <2 x i32> zeroinitializer
  %5546 = getelementptr i8, ptr %5542, i64 16
  %5547 = load <2 x double>, ptr %5546, align 16, !tbaa !26
  %5548 = fmul <2 x double> %5547, %5545
  %5549 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5540, <2 x double> %5543, <2 x double> %5548)
  %5550 = getelementptr inbounds nuw i8, ptr %5468, i64 128
  store <2 x double> %5549, ptr %5550, align 16, !tbaa !26
  %5551 = load i64, ptr %133, align 8, !tbaa !22
  %5552 = sitofp i64 %5551 to double
  %5553 = tail call double @llvm.fmuladd.f64(double %5552, double 2.500000e-01, double -5.000000e-01)
  %5554 = fcmp ogt double %5553, 0.000000e+00
  %5555 = select i1 %5554, double %5553, double 0.000000e+00
  %5556 = fptosi double %5555 to i64
  %5557 = add nsw i64 %5551, -2
  %5558 = tail call i64 @llvm.smin.i64(i64 %5557, i64 %5556)
  %5559 = sitofp i64 %5558 to double
  %5560 = fsub double %5553, %5559
  %5561 = fsub double 1.000000e+00, %5560
  %5562 = insertelement <2 x double> poison, double %5561, i64 0
  %5563 = shufflevector <2 x double> %5562, <2 x double> poison, <2 x i32> zeroinitializer
  %5564 = load ptr, ptr %5505, align 8, !tbaa !52
  %5565 = getelementptr inbounds <2 x double>, ptr %5564, i64 %5558
  %5566 = load <2 x double>, ptr %5565, align 16, !tbaa !26
  %5567 = insertelement <2 x double> poison, double %5560, i64 0
  %5568 = shufflevector <2 x double> %5567, <2 x double> poison, <2 x i32> zeroinitializer
  %5569 = getelementptr i8, ptr %5565, i64 16
  %5570 = load <2 x double>, ptr %5569, align 16, !tbaa !26
  %5571 = fmul <2 x double> %5570, %5568
  %5572 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %5563, <2 x double> %5566, <2 x double> %5571)
  %5573 = getelementptr inbounds nuw i8, ptr %5468, i64 144
  store <2 x double> %5572, ptr %5573, align 16, !tbaa !26
  %5574 = getelementptr inbounds nuw i8, ptr %5468, i64 160
  %5575 = add nuw nsw i64 %5469, 1
  %5576 = load i64, ptr %170, align 8, !tbaa !20
  %5577 = icmp slt i64 %5575, %5576
  br i1 %5577, label %5467, label %5578, !llvm.loop !153

5578:                                             ; preds = %5467, %5453, %5439
  %5579 = getelementptr inbounds nuw i8, ptr %5440, i64 48
  %5580 = extractelement <2 x i64> %4426, i64 0
  %5581 = extractelement <2 x i64> %4426, i64 1
  br label %5582

5582:                                             ; preds = %5578, %5725
  %5583 = phi i1 [ true, %5578 ], [ false, %5725 ]
  %5584 = phi i64 [ %5580, %5578 ], [ %5581, %5725 ]
  %5585 = phi i64 [ 0, %5578 ], [ 1, %5725 ]
  %5586 = icmp eq i64 %5584, 0
  br i1 %5586, label %5725, label %5587

5587:                                             ; preds = %5582
  %5588 = getelementptr inbounds nuw [2 x i64], ptr %229, i64 0, i64 %5585
  %5589 = load i64, ptr %5588, align 8, !tbaa !30
  %5590 = load i64, ptr %230, align 8, !tbaa !154
  %5591 = icmp eq i64 %5589, %5590
  br i1 %5591, label %5595, label %5592

5592:                                             ; preds = %5587
  %5593 = getelementptr inbounds nuw [2 x ptr], ptr %234, i64 0, i64 %5585
  %5594 = load ptr, ptr %5593, align 8, !tbaa !155
  br label %5610

5595:                                             ; preds = %5587
  %5596 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %5585
  %5597 = load i64, ptr %5596, align 8, !tbaa !30
  %5598 = load ptr, ptr %231, align 8, !tbaa !156
  %5599 = load i64, ptr %125, align 8, !tbaa !42
  %5600 = getelementptr inbounds i64, ptr %5598, i64 %5599
  store i64 %5597, ptr %5600, align 8, !tbaa !30
  %5601 = load ptr, ptr %232, align 8, !tbaa !157
  %5602 = load i64, ptr %125, align 8, !tbaa !42
  %5603 = add nsw i64 %5602, 1
  store i64 %5603, ptr %125, align 8, !tbaa !42
  %5604 = load i64, ptr %230, align 8, !tbaa !154
  %5605 = mul nsw i64 %5604, %5602
  %5606 = load i64, ptr %233, align 8, !tbaa !15
  %5607 = mul nsw i64 %5605, %5606
  %5608 = getelementptr inbounds double, ptr %5601, i64 %5607
  %5609 = getelementptr inbounds nuw [2 x ptr], ptr %234, i64 0, i64 %5585
  store ptr %5608, ptr %5609, align 8, !tbaa !155
  br label %5610

5610:                                             ; preds = %5592, %5595
  %5611 = phi i64 [ %5589, %5592 ], [ 0, %5595 ]
  %5612 = phi ptr [ %5594, %5592 ], [ %5608, %5595 ]
  %5613 = add nsw i64 %5611, 1
  store i64 %5613, ptr %5588, align 8, !tbaa !30
  %5614 = load i64, ptr %233, align 8, !tbaa !15
  %5615 = mul nsw i64 %5614, %5611
  %5616 = getelementptr inbounds double, ptr %5612, i64 %5615
  %5617 = load ptr, ptr %227, align 16, !tbaa !39
  %5618 = icmp ult ptr %5617, %5436
  br i1 %5618, label %5678, label %5619

5619:                                             ; preds = %5678, %5610
  %5620 = phi ptr [ %5616, %5610 ], [ %5683, %5678 ]
  %5621 = load i64, ptr %142, align 16, !tbaa !16
  %5622 = icmp sgt i64 %5621, 0
  br i1 %5622, label %5623, label %5665

5623:                                             ; preds = %5619
  %5624 = and i64 %5621, 3
  %5625 = icmp ult i64 %5621, 4
  br i1 %5625, label %5650, label %5626

5626:                                             ; preds = %5623
  %5627 = and i64 %5621, 9223372036854775804
  br label %5628

5628:                                             ; preds = %5628, %5626
  %5629 = phi i64 [ 0, %5626 ], [ %5647, %5628 ]
  %5630 = phi ptr [ %5620, %5626 ], [ %5644, %5628 ]
  %5631 = phi i64 [ 0, %5626 ], [ %5648, %5628 ]
  %5632 = getelementptr i8, ptr %5630, i64 8
  %5633 = getelementptr inbounds nuw <2 x double>, ptr %5436, i64 %5629, i64 %5585
  %5634 = load double, ptr %5633, align 8
  store double %5634, ptr %5630, align 8, !tbaa !43
  %5635 = or disjoint i64 %5629, 1
  %5636 = getelementptr i8, ptr %5630, i64 16
  %5637 = getelementptr inbounds nuw <2 x double>, ptr %5436, i64 %5635, i64 %5585
  %5638 = load double, ptr %5637, align 8
  store double %5638, ptr %5632, align 8, !tbaa !43
  %5639 = or disjoint i64 %5629, 2
  %5640 = getelementptr i8, ptr %5630, i64 24
  %5641 = getelementptr inbounds nuw <2 x double>, ptr %5436, i64 %5639, i64 %5585
  %5642 = load double, ptr %5641, align 8
  store double %5642, ptr %5636, align 8, !tbaa !43
  %5643 = or disjoint i64 %5629, 3
  %5644 = getelementptr i8, ptr %5630, i64 32
  %5645 = getelementptr inbounds nuw <2 x double>, ptr %5436, i64 %5643, i64 %5585
  %5646 = load double, ptr %5645, align 8
  store double %5646, ptr %5640, align 8, !tbaa !43
  %5647 = add nuw nsw i64 %5629, 4
  %5648 = add i64 %5631, 4
  %5649 = icmp eq i64 %5648, %5627
  br i1 %5649, label %5650, label %5628, !llvm.loop !158

5650:                                             ; preds = %5628, %5623
  %5651 = phi ptr [ poison, %5623 ], [ %5644, %5628 ]
  %5652 = phi i64 [ 0, %5623 ], [ %5647, %5628 ]
  %5653 = phi ptr [ %5620, %5623 ], [ %5644, %5628 ]
  %5654 = icmp eq i64 %5624, 0
  br i1 %5654, label %5665, label %5655

5655:                                             ; preds = %5650, %5655
  %5656 = phi i64 [ %5662, %5655 ], [ %5652, %5650 ]
  %5657 = phi ptr [ %5659, %5655 ], [ %5653, %5650 ]
  %5658 = phi i64 [ %5663, %5655 ], [ 0, %5650 ]
  %5659 = getelementptr i8, ptr %5657, i64 8
  %5660 = getelementptr inbounds nuw <2 x double>, ptr %5436, i64 %5656, i64 %5585
  %5661 = load double, ptr %5660, align 8
  store double %5661, ptr %5657, align 8, !tbaa !43
  %5662 = add nuw nsw i64 %5656, 1
  %5663 = add i64 %5658, 1
  %5664 = icmp eq i64 %5663, %5624
  br i1 %5664, label %5665, label %5655, !llvm.loop !159

5665:                                             ; preds = %5650, %5655, %5619
  %5666 = phi ptr [ %5620, %5619 ], [ %5651, %5650 ], [ %5659, %5655 ]
  %5667 = load i64, ptr %141, align 8, !tbaa !45
  %5668 = icmp eq i64 %5667, 0
  br i1 %5668, label %5725, label %5669

5669:                                             ; preds = %5665
  %5670 = getelementptr inbounds nuw double, ptr %5440, i64 %5585
  %5671 = load double, ptr %5670, align 8, !tbaa !43
  %5672 = getelementptr inbounds nuw i8, ptr %5666, i64 8
  store double %5671, ptr %5666, align 8, !tbaa !43
  %5673 = getelementptr inbounds nuw i8, ptr %5670, i64 16
  %5674 = load double, ptr %5673, align 8, !tbaa !43
  %5675 = getelementptr inbounds nuw i8, ptr %5666, i64 16
  store double %5674, ptr %5672, align 8, !tbaa !43
  %5676 = getelementptr inbounds nuw i8, ptr %5670, i64 32
  %5677 = load double, ptr %5676, align 8, !tbaa !43
  store double %5677, ptr %5675, align 8, !tbaa !43
  br i1 %5622, label %5686, label %5725

5678:                                             ; preds = %5610, %5678
  %5679 = phi ptr [ %5684, %5678 ], [ %5617, %5610 ]
  %5680 = phi ptr [ %5683, %5678 ], [ %5616, %5610 ]
  %5681 = getelementptr inbounds nuw double, ptr %5679, i64 %5585
  %5682 = load double, ptr %5681, align 8, !tbaa !43
  %5683 = getelementptr inbounds nuw i8, ptr %5680, i64 8
  store double %5682, ptr %5680, align 8, !tbaa !43
  %5684 = getelementptr inbounds nuw i8, ptr %5679, i64 16
  %5685 = icmp ult ptr %5684, %5436
  br i1 %5685, label %5678, label %5619, !llvm.loop !160

5686:                                             ; preds = %5669
  %5687 = getelementptr inbounds nuw i8, ptr %5666, i64 24
  br label %5688

5688:                                             ; preds = %5686, %5688
  %5689 = phi i64 [ %5723, %5688 ], [ 0, %5686 ]
  %5690 = phi ptr [ %5722, %5688 ], [ %5687, %5686 ]
  %5691 = mul nuw nsw i64 %5689, 160
  %5692 = getelementptr inbounds nuw i8, ptr %5579, i64 %5691
  %5693 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 0, i64 %5585
  %5694 = load double, ptr %5693, align 8
  %5695 = getelementptr inbounds nuw i8, ptr %5690, i64 8
  store double %5694, ptr %5690, align 8, !tbaa !43
  %5696 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 1, i64 %5585
  %5697 = load double, ptr %5696, align 8
  %5698 = getelementptr inbounds nuw i8, ptr %5690, i64 16
  store double %5697, ptr %5695, align 8, !tbaa !43
  %5699 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 2, i64 %5585
  %5700 = load double, ptr %5699, align 8
  %5701 = getelementptr inbounds nuw i8, ptr %5690, i64 24
  store double %5700, ptr %5698, align 8, !tbaa !43
  %5702 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 3, i64 %5585
  %5703 = load double, ptr %5702, align 8
  %5704 = getelementptr inbounds nuw i8, ptr %5690, i64 32
  store double %5703, ptr %5701, align 8, !tbaa !43
  %5705 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 4, i64 %5585
  %5706 = load double, ptr %5705, align 8
  %5707 = getelementptr inbounds nuw i8, ptr %5690, i64 40
  store double %5706, ptr %5704, align 8, !tbaa !43
  %5708 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 5, i64 %5585
  %5709 = load double, ptr %5708, align 8
  %5710 = getelementptr inbounds nuw i8, ptr %5690, i64 48
  store double %5709, ptr %5707, align 8, !tbaa !43
  %5711 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 6, i64 %5585
  %5712 = load double, ptr %5711, align 8
  %5713 = getelementptr inbounds nuw i8, ptr %5690, i64 56
  store double %5712, ptr %5710, align 8, !tbaa !43
  %5714 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 7, i64 %5585
  %5715 = load double, ptr %5714, align 8
  %5716 = getelementptr inbounds nuw i8, ptr %5690, i64 64
  store double %5715, ptr %5713, align 8, !tbaa !43
  %5717 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 8, i64 %5585
  %5718 = load double, ptr %5717, align 8
  %5719 = getelementptr inbounds nuw i8, ptr %5690, i64 72
  store double %5718, ptr %5716, align 8, !tbaa !43
  %5720 = getelementptr inbounds nuw <2 x double>, ptr %5692, i64 9, i64 %5585
  %5721 = load double, ptr %5720, align 8
  %5722 = getelementptr inbounds nuw i8, ptr %5690, i64 80
  store double %5721, ptr %5719, align 8, !tbaa !43
  %5723 = add nuw nsw i64 %5689, 1
  %5724 = icmp eq i64 %5723, %5621
  br i1 %5724, label %5725, label %5688, !llvm.loop !158

5725:                                             ; preds = %5688, %5669, %5665, %5582
  br i1 %5583, label %5582, label %5726, !llvm.loop !161

5726:                                             ; preds = %5725
  %5727 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %5728 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %5729 = fsub <2 x double> %5727, %5728
  %5730 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %5731 = fadd <2 x double> %5730, splat (double -1.000000e-09)
  %5732 = fcmp oge <2 x double> %5729, %5731
  %5733 = select <2 x i1> %5732, <2 x i64> %4426, <2 x i64> zeroinitializer
  %5734 = load i64, ptr %170, align 8, !tbaa !20
  %5735 = icmp sgt i64 %5734, 0
  br i1 %5735, label %5736, label %5784

5736:                                             ; preds = %5726
  %5737 = load ptr, ptr %143, align 8, !tbaa !28
  %5738 = and i64 %5734, 3
  %5739 = icmp ult i64 %5734, 4
  br i1 %5739, label %5768, label %5740

5740:                                             ; preds = %5736
  %5741 = and i64 %5734, 9223372036854775804
  br label %5742

5742:                                             ; preds = %5742, %5740
  %5743 = phi i64 [ 0, %5740 ], [ %5765, %5742 ]
  %5744 = phi <2 x double> [ splat (double 1.000000e+09), %5740 ], [ %5764, %5742 ]
  %5745 = phi i64 [ 0, %5740 ], [ %5766, %5742 ]
  %5746 = getelementptr inbounds nuw %struct.Piece, ptr %5737, i64 %5743, i32 34
  %5747 = load <2 x double>, ptr %5746, align 16, !tbaa !26
  %5748 = fcmp olt <2 x double> %5744, %5747
  %5749 = select <2 x i1> %5748, <2 x double> %5744, <2 x double> %5747
  %5750 = or disjoint i64 %5743, 1
  %5751 = getelementptr inbounds nuw %struct.Piece, ptr %5737, i64 %5750, i32 34
  %5752 = load <2 x double>, ptr %5751, align 16, !tbaa !26
  %5753 = fcmp olt <2 x double> %5749, %5752
  %5754 = select <2 x i1> %5753, <2 x double> %5749, <2 x double> %5752
  %5755 = or disjoint i64 %5743, 2
  %5756 = getelementptr inbounds nuw %struct.Piece, ptr %5737, i64 %5755, i32 34
  %5757 = load <2 x double>, ptr %5756, align 16, !tbaa !26
  %5758 = fcmp olt <2 x double> %5754, %5757
  %5759 = select <2 x i1> %5758, <2 x double> %5754, <2 x double> %5757
  %5760 = or disjoint i64 %5743, 3
  %5761 = getelementptr inbounds nuw %struct.Piece, ptr %5737, i64 %5760, i32 34
  %5762 = load <2 x double>, ptr %5761, align 16, !tbaa !26
  %5763 = fcmp olt <2 x double> %5759, %5762
  %5764 = select <2 x i1> %5763, <2 x double> %5759, <2 x double> %5762
  %5765 = add nuw nsw i64 %5743, 4
  %5766 = add i64 %5745, 4
  %5767 = icmp eq i64 %5766, %5741
  br i1 %5767, label %5768, label %5742, !llvm.loop !136

5768:                                             ; preds = %5742, %5736
  %5769 = phi <2 x double> [ poison, %5736 ], [ %5764, %5742 ]
  %5770 = phi i64 [ 0, %5736 ], [ %5765, %5742 ]
  %5771 = phi <2 x double> [ splat (double 1.000000e+09), %5736 ], [ %5764, %5742 ]
  %5772 = icmp eq i64 %5738, 0
  br i1 %5772, label %5784, label %5773

5773:                                             ; preds = %5768, %5773
  %5774 = phi i64 [ %5781, %5773 ], [ %5770, %5768 ]
  %5775 = phi <2 x double> [ %5780, %5773 ], [ %5771, %5768 ]
  %5776 = phi i64 [ %5782, %5773 ], [ 0, %5768 ]
  %5777 = getelementptr inbounds nuw %struct.Piece, ptr %5737, i64 %5774, i32 34
  %5778 = load <2 x double>, ptr %5777, align 16, !tbaa !26
  %5779 = fcmp olt <2 x double> %5775, %5778
  %5780 = select <2 x i1> %5779, <2 x double> %5775, <2 x double> %5778
  %5781 = add nuw nsw i64 %5774, 1
  %5782 = add i64 %5776, 1
  %5783 = icmp eq i64 %5782, %5738
  br i1 %5783, label %5784, label %5773, !llvm.loop !162

5784:                                             ; preds = %5768, %5773, %5726
  %5785 = phi <2 x double> [ splat (double 1.000000e+09), %5726 ], [ %5769, %5768 ], [ %5780, %5773 ]
  %5786 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %5787 = select <2 x i1> %4486, <2 x double> %5786, <2 x double> %5785
  store <2 x double> %5787, ptr %223, align 16, !tbaa !26
  %5788 = load <2 x double>, ptr %224, align 16, !tbaa !26
  %5789 = fcmp une <2 x double> %5788, zeroinitializer
  %5790 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %5791 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %5792 = fsub <2 x double> %5790, %5791
  %5793 = fcmp une <2 x double> %5788, splat (double 1.000000e+00)
  %5794 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %5795 = load <2 x double>, ptr %225, align 16, !tbaa !26
  %5796 = fsub <2 x double> %5794, %5795
  %5797 = select <2 x i1> %5793, <2 x double> splat (double -1.000000e+00), <2 x double> %5796
  %5798 = fcmp une <2 x double> %5788, splat (double 2.000000e+00)
  %5799 = fsub <2 x double> %5787, %5795
  %5800 = select <2 x i1> %5798, <2 x double> %5797, <2 x double> %5799
  %5801 = fcmp une <2 x double> %5788, splat (double 3.000000e+00)
  %5802 = fsub <2 x double> %5792, %5795
  %5803 = select <2 x i1> %5801, <2 x double> %5800, <2 x double> %5802
  %5804 = fcmp une <2 x double> %5788, splat (double 4.000000e+00)
  %5805 = fsub <2 x double> %5795, %5792
  %5806 = select <2 x i1> %5804, <2 x double> %5803, <2 x double> %5805
  %5807 = fcmp oge <2 x double> %5806, splat (double 0xBEB0C6F7A0B5ED8D)
  %5808 = select <2 x i1> %5807, <2 x i1> %5789, <2 x i1> zeroinitializer
  %5809 = select <2 x i1> %5808, <2 x i64> %4426, <2 x i64> zeroinitializer
  %5810 = xor <2 x i64> %5809, splat (i64 -1)
  %5811 = and <2 x i64> %5733, %5810
  %5812 = load <2 x double>, ptr %139, align 16, !tbaa !26
  %5813 = icmp ne <2 x i64> %5811, zeroinitializer
  %5814 = select <2 x i1> %5789, <2 x i1> %5813, <2 x i1> zeroinitializer
  %5815 = select <2 x i1> %5814, <2 x double> splat (double 2.000000e+00), <2 x double> %5812
  store <2 x double> %5815, ptr %139, align 16, !tbaa !26
  %5816 = or <2 x i64> %5809, %5733
  %5817 = load <2 x double>, ptr %228, align 16, !tbaa !26
  %5818 = fadd <2 x double> %5817, splat (double 1.000000e+00)
  %5819 = icmp eq <2 x i64> %5816, zeroinitializer
  %5820 = select <2 x i1> %5819, <2 x double> %5817, <2 x double> %5818
  store <2 x double> %5820, ptr %228, align 16, !tbaa !26
  %5821 = xor <2 x i64> %5816, %4426
  %5822 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %5823 = fcmp oeq <2 x double> %5822, zeroinitializer
  %5824 = load <2 x double>, ptr %169, align 16, !tbaa !26
  %5825 = fcmp oeq <2 x double> %5824, zeroinitializer
  %5826 = select <2 x i1> %5825, <2 x i1> %5823, <2 x i1> zeroinitializer
  %5827 = select <2 x i1> %5826, <2 x i64> %5821, <2 x i64> zeroinitializer
  %5828 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %5829 = fmul <2 x double> %5828, splat (double 5.000000e-01)
  %5830 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %5831 = fadd <2 x double> %5830, %5829
  %5832 = fadd <2 x double> %5831, splat (double -4.000000e-03)
  %5833 = fcmp ult <2 x double> %5794, %5832
  %5834 = fsub <2 x double> %5830, %5829
  %5835 = fadd <2 x double> %5834, splat (double 4.000000e-03)
  %5836 = fcmp ole <2 x double> %5794, %5835
  %5837 = load <2 x i64>, ptr %157, align 16, !tbaa !26
  %5838 = select <2 x i1> %5836, <2 x i64> splat (i64 -1), <2 x i64> %5837
  %5839 = select <2 x i1> %5833, <2 x i64> %5838, <2 x i64> zeroinitializer
  %5840 = xor <2 x i64> %5839, %5837
  %5841 = and <2 x i64> %5840, %5827
  %5842 = and <2 x i64> %5839, %5827
  %5843 = xor <2 x i64> %5827, splat (i64 -1)
  %5844 = and <2 x i64> %5837, %5843
  %5845 = or disjoint <2 x i64> %5842, %5844
  store <2 x i64> %5845, ptr %157, align 16, !tbaa !26
  %5846 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %5847 = or <2 x i64> %5841, %5846
  store <2 x i64> %5847, ptr %167, align 16, !tbaa !26
  %5848 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5816)
  %5849 = icmp eq i64 %5848, 0
  br i1 %5849, label %5860, label %5850

5850:                                             ; preds = %5784
  %5851 = extractelement <2 x i64> %5816, i64 0
  %5852 = icmp eq i64 %5851, 0
  br i1 %5852, label %5854, label %5853

5853:                                             ; preds = %5850
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 0) #7
  br label %5854

5854:                                             ; preds = %5853, %5850
  %5855 = extractelement <2 x i64> %5816, i64 1
  %5856 = icmp eq i64 %5855, 0
  br i1 %5856, label %5858, label %5857

5857:                                             ; preds = %5854
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %1, ptr noundef nonnull align 8 dereferenceable(224) %0, i32 noundef 1) #7
  br label %5858

5858:                                             ; preds = %5857, %5854
  %5859 = load <2 x double>, ptr %139, align 16, !tbaa !26
  br label %5860

5860:                                             ; preds = %5858, %5784
  %5861 = phi <2 x double> [ %5859, %5858 ], [ %5815, %5784 ]
  %5862 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %5863 = load <2 x double>, ptr %235, align 16, !tbaa !26
  %5864 = fadd <2 x double> %5863, splat (double -1.000000e+00)
  %5865 = fcmp oge <2 x double> %5862, %5864
  %5866 = select <2 x i1> %5865, <2 x i64> %4426, <2 x i64> zeroinitializer
  %5867 = icmp eq <2 x i64> %5866, zeroinitializer
  %5868 = select <2 x i1> %5867, <2 x double> %5861, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %5868, ptr %139, align 16, !tbaa !26
  %5869 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5866)
  %5870 = icmp eq i64 %5869, 0
  br i1 %5870, label %531, label %5871

5871:                                             ; preds = %5860
  %5872 = extractelement <2 x i64> %5866, i64 0
  %5873 = icmp eq i64 %5872, 0
  br i1 %5873, label %5875, label %5874

5874:                                             ; preds = %5871
  store double 1.000000e+00, ptr %131, align 8, !tbaa !43
  br label %5875

5875:                                             ; preds = %5874, %5871
  %5876 = extractelement <2 x i64> %5866, i64 1
  %5877 = icmp eq i64 %5876, 0
  br i1 %5877, label %531, label %5878

5878:                                             ; preds = %5875
  store double 1.000000e+00, ptr %265, align 8, !tbaa !43
  br label %531

5879:                                             ; preds = %531, %536, %122
  %5880 = phi i64 [ 0, %122 ], [ 1, %536 ], [ 0, %531 ]
  ret i64 %5880
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %0, ptr nocapture noundef nonnull align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %6 = getelementptr inbounds nuw i8, ptr %0, i64 632
  %7 = zext nneg i32 %2 to i64
  %8 = load ptr, ptr %5, align 8, !tbaa !163
  %9 = load i64, ptr %6, align 8, !tbaa !27
  %10 = getelementptr inbounds i64, ptr %8, i64 %9
  %11 = load i64, ptr %10, align 8, !tbaa !30
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1600) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2, i64 noundef %11) #7
  %12 = getelementptr inbounds nuw i64, ptr %4, i64 %7
  store i64 -1, ptr %12, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1600) %0, ptr noundef nonnull align 8 dereferenceable(224) %1, i32 noundef %2) #7
  %13 = load i64, ptr %6, align 8, !tbaa !27
  %14 = add nsw i64 %13, 1
  store i64 %14, ptr %6, align 8, !tbaa !27
  %15 = getelementptr inbounds nuw i8, ptr %0, i64 1584
  %16 = load ptr, ptr %15, align 16, !tbaa !39
  %17 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %18 = load <2 x double>, ptr %17, align 16, !tbaa !26
  %19 = getelementptr inbounds nuw i8, ptr %16, i64 16
  store <2 x double> %18, ptr %16, align 16, !tbaa !26
  %20 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %21 = load <2 x double>, ptr %20, align 16, !tbaa !26
  %22 = getelementptr inbounds nuw i8, ptr %16, i64 32
  store <2 x double> %21, ptr %19, align 16, !tbaa !26
  %23 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %24 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %25 = load <2 x double>, ptr %24, align 16, !tbaa !26
  %26 = getelementptr inbounds nuw i8, ptr %16, i64 48
  store <2 x double> %25, ptr %22, align 16, !tbaa !26
  %27 = load <2 x double>, ptr %23, align 16, !tbaa !26
  %28 = getelementptr inbounds nuw i8, ptr %16, i64 64
  store <2 x double> %27, ptr %26, align 16, !tbaa !26
  %29 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %30 = load i64, ptr %29, align 8, !tbaa !20
  %31 = icmp sgt i64 %30, 0
  %32 = getelementptr inbounds nuw i8, ptr %4, i64 8
  br i1 %31, label %33, label %35

33:                                               ; preds = %3
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 1592
  br label %40

35:                                               ; preds = %40, %3
  %36 = phi ptr [ %28, %3 ], [ %46, %40 ]
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 40
  %38 = load i64, ptr %37, align 8, !tbaa !45
  %39 = icmp eq i64 %38, 0
  br i1 %39, label %181, label %50

40:                                               ; preds = %33, %40
  %41 = phi ptr [ %28, %33 ], [ %46, %40 ]
  %42 = phi i64 [ 0, %33 ], [ %47, %40 ]
  %43 = load ptr, ptr %34, align 8, !tbaa !28
  %44 = getelementptr inbounds nuw %struct.Piece, ptr %43, i64 %42, i32 34
  %45 = load <2 x double>, ptr %44, align 16, !tbaa !26
  %46 = getelementptr inbounds nuw i8, ptr %41, i64 16
  store <2 x double> %45, ptr %41, align 16, !tbaa !26
  %47 = add nuw nsw i64 %42, 1
  %48 = load i64, ptr %29, align 8, !tbaa !20
  %49 = icmp slt i64 %47, %48
  br i1 %49, label %40, label %35, !llvm.loop !152

50:                                               ; preds = %35
  %51 = getelementptr inbounds nuw i8, ptr %0, i64 816
  %52 = load <2 x double>, ptr %51, align 16, !tbaa !26
  %53 = getelementptr inbounds nuw i8, ptr %36, i64 16
  store <2 x double> %52, ptr %36, align 16, !tbaa !26
  %54 = getelementptr inbounds nuw i8, ptr %0, i64 800
  %55 = load <2 x double>, ptr %54, align 16, !tbaa !26
  %56 = getelementptr inbounds nuw i8, ptr %36, i64 32
  store <2 x double> %55, ptr %53, align 16, !tbaa !26
  %57 = load <2 x double>, ptr %24, align 16, !tbaa !26
  %58 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %59 = load <2 x double>, ptr %58, align 16, !tbaa !26
  %60 = fsub <2 x double> %57, %59
  %61 = fcmp ogt <2 x double> %60, zeroinitializer
  %62 = select <2 x i1> %61, <2 x double> %60, <2 x double> zeroinitializer
  store <2 x double> %62, ptr %56, align 16, !tbaa !26
  %63 = load i64, ptr %29, align 8, !tbaa !20
  %64 = icmp sgt i64 %63, 0
  br i1 %64, label %65, label %181

65:                                               ; preds = %50
  %66 = getelementptr inbounds nuw i8, ptr %36, i64 48
  %67 = getelementptr inbounds nuw i8, ptr %0, i64 1592
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 608
  %69 = getelementptr inbounds nuw i8, ptr %0, i64 616
  br label %70

70:                                               ; preds = %65, %70
  %71 = phi ptr [ %66, %65 ], [ %177, %70 ]
  %72 = phi i64 [ 0, %65 ], [ %178, %70 ]
  %73 = load ptr, ptr %67, align 8, !tbaa !28
  %74 = getelementptr inbounds nuw %struct.Piece, ptr %73, i64 %72
  %75 = getelementptr inbounds nuw i8, ptr %74, i64 2160
  %76 = load ptr, ptr %75, align 16, !tbaa !48
  %77 = load i64, ptr %68, align 16, !tbaa !21
  %78 = getelementptr <2 x double>, ptr %76, i64 %77
  %79 = getelementptr i8, ptr %78, i64 -16
  %80 = load <2 x double>, ptr %79, align 16, !tbaa !26
  %81 = getelementptr inbounds nuw i8, ptr %74, i64 1808
  %82 = load <2 x double>, ptr %81, align 16, !tbaa !26
  %83 = getelementptr inbounds nuw i8, ptr %74, i64 1488
  %84 = load <2 x double>, ptr %83, align 16, !tbaa !26
  %85 = fsub <2 x double> %84, %80
  %86 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %82, <2 x double> %85, <2 x double> %80)
  %87 = getelementptr inbounds nuw i8, ptr %71, i64 16
  store <2 x double> %86, ptr %71, align 16, !tbaa !26
  %88 = getelementptr inbounds nuw i8, ptr %74, i64 1696
  %89 = load <2 x double>, ptr %88, align 16, !tbaa !26
  %90 = getelementptr inbounds nuw i8, ptr %71, i64 32
  store <2 x double> %89, ptr %87, align 16, !tbaa !26
  %91 = load <2 x double>, ptr %74, align 16, !tbaa !26
  %92 = getelementptr inbounds nuw i8, ptr %74, i64 960
  %93 = load <2 x double>, ptr %92, align 16, !tbaa !26
  %94 = fsub <2 x double> %91, %93
  %95 = getelementptr inbounds nuw i8, ptr %71, i64 48
  store <2 x double> %94, ptr %90, align 16, !tbaa !26
  %96 = getelementptr inbounds nuw i8, ptr %74, i64 1040
  %97 = load <2 x double>, ptr %96, align 16, !tbaa !26
  %98 = getelementptr inbounds nuw i8, ptr %71, i64 64
  store <2 x double> %97, ptr %95, align 16, !tbaa !26
  %99 = getelementptr inbounds nuw i8, ptr %74, i64 1024
  %100 = load <2 x double>, ptr %99, align 16, !tbaa !26
  %101 = getelementptr inbounds nuw i8, ptr %71, i64 80
  store <2 x double> %100, ptr %98, align 16, !tbaa !26
  %102 = getelementptr inbounds nuw i8, ptr %74, i64 992
  %103 = load <2 x double>, ptr %102, align 16, !tbaa !26
  %104 = getelementptr inbounds nuw i8, ptr %71, i64 96
  store <2 x double> %103, ptr %101, align 16, !tbaa !26
  %105 = getelementptr inbounds nuw i8, ptr %74, i64 1056
  %106 = load <2 x double>, ptr %105, align 16, !tbaa !26
  %107 = getelementptr inbounds nuw i8, ptr %71, i64 112
  store <2 x double> %106, ptr %104, align 16, !tbaa !26
  %108 = getelementptr inbounds nuw i8, ptr %74, i64 2280
  %109 = load i64, ptr %69, align 8, !tbaa !22
  %110 = sitofp i64 %109 to double
  %111 = tail call double @llvm.fmuladd.f64(double %110, double 7.500000e-01, double -5.000000e-01)
  %112 = fcmp ogt double %111, 0.000000e+00
  %113 = select i1 %112, double %111, double 0.000000e+00
  %114 = fptosi double %113 to i64
  %115 = add nsw i64 %109, -2
  %116 = tail call i64 @llvm.smin.i64(i64 %115, i64 %114)
  %117 = sitofp i64 %116 to double
  %118 = fsub double %111, %117
  %119 = fsub double 1.000000e+00, %118
  %120 = insertelement <2 x double> poison, double %119, i64 0
  %121 = shufflevector <2 x double> %120, <2 x double> poison, <2 x i32> zeroinitializer
  %122 = load ptr, ptr %108, align 8, !tbaa !52
  %123 = getelementptr inbounds <2 x double>, ptr %122, i64 %116
  %124 = load <2 x double>, ptr %123, align 16, !tbaa !26
  %125 = insertelement <2 x double> poison, double %118, i64 0
  %126 = shufflevector <2 x double> %125, <2 x double> poison, <2 x i32> zeroinitializer
  %127 = getelementptr i8, ptr %123, i64 16
  %128 = load <2 x double>, ptr %127, align 16, !tbaa !26
  %129 = fmul <2 x double> %128, %126
  %130 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %121, <2 x double> %124, <2 x double> %129)
  store <2 x double> %130, ptr %107, align 16, !tbaa !26
  %131 = load i64, ptr %69, align 8, !tbaa !22
  %132 = sitofp i64 %131 to double
  %133 = tail call double @llvm.fmuladd.f64(double %132, double 5.000000e-01, double -5.000000e-01)
  %134 = fcmp ogt double %133, 0.000000e+00
  %135 = select i1 %134, double %133, double 0.000000e+00
  %136 = fptosi double %135 to i64
  %137 = add nsw i64 %131, -2
  %138 = tail call i64 @llvm.smin.i64(i64 %137, i64 %136)
  %139 = sitofp i64 %138 to double
  %140 = fsub double %133, %139
  %141 = fsub double 1.000000e+00, %140
  %142 = insertelement <2 x double> poison, double %141, i64 0
  %143 = shufflevector <2 x double> %142, <2 x double> poison, <2 x i32> zeroinitializer
  %144 = load ptr, ptr %108, align 8, !tbaa !52
  %145 = getelementptr inbounds <2 x double>, ptr %144, i64 %138
  %146 = load <2 x double>, ptr %145, align 16, !tbaa !26
  %147 = insertelement <2 x double> poison, double %140, i64 0
  %148 = shufflevector <2 x double> %147, <2 x double> poison, <2 x i32> zeroinitializer
  %149 = getelementptr i8, ptr %145, i64 16
  %150 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %151 = fmul <2 x double> %150, %148
  %152 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %143, <2 x double> %146, <2 x double> %151)
  %153 = getelementptr inbounds nuw i8, ptr %71, i64 128
  store <2 x double> %152, ptr %153, align 16, !tbaa !26
  %154 = load i64, ptr %69, align 8, !tbaa !22
  %155 = sitofp i64 %154 to double
  %156 = tail call double @llvm.fmuladd.f64(double %155, double 2.500000e-01, double -5.000000e-01)
  %157 = fcmp ogt double %156, 0.000000e+00
  %158 = select i1 %157, double %156, double 0.000000e+00
  %159 = fptosi double %158 to i64
  %160 = add nsw i64 %154, -2
  %161 = tail call i64 @llvm.smin.i64(i64 %160, i64 %159)
  %162 = sitofp i64 %161 to double
  %163 = fsub double %156, %162
  %164 = fsub double 1.000000e+00, %163
  %165 = insertelement <2 x double> poison, double %164, i64 0
  %166 = shufflevector <2 x double> %165, <2 x double> poison, <2 x i32> zeroinitializer
  %167 = load ptr, ptr %108, align 8, !tbaa !52
  %168 = getelementptr inbounds <2 x double>, ptr %167, i64 %161
  %169 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %170 = insertelement <2 x double> poison, double %163, i64 0
  %171 = shufflevector <2 x double> %170, <2 x double> poison, <2 x i32> zeroinitializer
  %172 = getelementptr i8, ptr %168, i64 16
  %173 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %174 = fmul <2 x double> %173, %171
  %175 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %166, <2 x double> %169, <2 x double> %174)
  %176 = getelementptr inbounds nuw i8, ptr %71, i64 144
  store <2 x double> %175, ptr %176, align 16, !tbaa !26
  %177 = getelementptr inbounds nuw i8, ptr %71, i64 160
  %178 = add nuw nsw i64 %72, 1
  %179 = load i64, ptr %29, align 8, !tbaa !20
  %180 = icmp slt i64 %178, %179
  br i1 %180, label %70, label %181, !llvm.loop !153

181:                                              ; preds = %70, %50, %35
  %182 = getelementptr inbounds nuw i8, ptr %0, i64 1504
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %184 = getelementptr inbounds nuw i8, ptr %0, i64 1488
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %186 = load ptr, ptr %185, align 8
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %190 = getelementptr inbounds nuw i8, ptr %0, i64 1552
  %191 = load ptr, ptr %15, align 16
  %192 = icmp ult ptr %191, %28
  %193 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %194 = getelementptr inbounds nuw i8, ptr %36, i64 48
  br label %195

195:                                              ; preds = %181, %336
  %196 = phi i1 [ true, %181 ], [ false, %336 ]
  %197 = phi ptr [ %4, %181 ], [ %32, %336 ]
  %198 = phi i64 [ 0, %181 ], [ 1, %336 ]
  %199 = load i64, ptr %197, align 8, !tbaa !30
  %200 = icmp eq i64 %199, 0
  br i1 %200, label %336, label %201

201:                                              ; preds = %195
  %202 = getelementptr inbounds nuw [2 x i64], ptr %182, i64 0, i64 %198
  %203 = load i64, ptr %202, align 8, !tbaa !30
  %204 = load i64, ptr %183, align 8, !tbaa !154
  %205 = icmp eq i64 %203, %204
  br i1 %205, label %209, label %206

206:                                              ; preds = %201
  %207 = getelementptr inbounds nuw [2 x ptr], ptr %190, i64 0, i64 %198
  %208 = load ptr, ptr %207, align 8, !tbaa !155
  br label %223

209:                                              ; preds = %201
  %210 = getelementptr inbounds nuw [2 x i64], ptr %184, i64 0, i64 %198
  %211 = load i64, ptr %210, align 8, !tbaa !30
  %212 = load i64, ptr %187, align 8, !tbaa !42
  %213 = getelementptr inbounds i64, ptr %186, i64 %212
  store i64 %211, ptr %213, align 8, !tbaa !30
  %214 = load ptr, ptr %188, align 8, !tbaa !157
  %215 = load i64, ptr %187, align 8, !tbaa !42
  %216 = add nsw i64 %215, 1
  store i64 %216, ptr %187, align 8, !tbaa !42
  %217 = load i64, ptr %183, align 8, !tbaa !154
  %218 = mul nsw i64 %217, %215
  %219 = load i64, ptr %189, align 8, !tbaa !15
  %220 = mul nsw i64 %218, %219
  %221 = getelementptr inbounds double, ptr %214, i64 %220
  %222 = getelementptr inbounds nuw [2 x ptr], ptr %190, i64 0, i64 %198
  store ptr %221, ptr %222, align 8, !tbaa !155
  br label %223

223:                                              ; preds = %206, %209
  %224 = phi i64 [ %203, %206 ], [ 0, %209 ]
  %225 = phi ptr [ %208, %206 ], [ %221, %209 ]
  %226 = add nsw i64 %224, 1
  store i64 %226, ptr %202, align 8, !tbaa !30
  %227 = load i64, ptr %189, align 8, !tbaa !15
  %228 = mul nsw i64 %227, %224
  %229 = getelementptr inbounds double, ptr %225, i64 %228
  br i1 %192, label %289, label %230

230:                                              ; preds = %289, %223
  %231 = phi ptr [ %229, %223 ], [ %294, %289 ]
  %232 = load i64, ptr %193, align 16, !tbaa !16
  %233 = icmp sgt i64 %232, 0
  br i1 %233, label %234, label %276

234:                                              ; preds = %230
  %235 = and i64 %232, 3
  %236 = icmp ult i64 %232, 4
  br i1 %236, label %261, label %237

237:                                              ; preds = %234
  %238 = and i64 %232, 9223372036854775804
  br label %239

239:                                              ; preds = %239, %237
  %240 = phi i64 [ 0, %237 ], [ %258, %239 ]
  %241 = phi ptr [ %231, %237 ], [ %255, %239 ]
  %242 = phi i64 [ 0, %237 ], [ %259, %239 ]
  %243 = getelementptr i8, ptr %241, i64 8
  %244 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %240, i64 %198
  %245 = load double, ptr %244, align 8
  store double %245, ptr %241, align 8, !tbaa !43
  %246 = or disjoint i64 %240, 1
  %247 = getelementptr i8, ptr %241, i64 16
  %248 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %246, i64 %198
  %249 = load double, ptr %248, align 8
  store double %249, ptr %243, align 8, !tbaa !43
  %250 = or disjoint i64 %240, 2
  %251 = getelementptr i8, ptr %241, i64 24
  %252 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %250, i64 %198
  %253 = load double, ptr %252, align 8
  store double %253, ptr %247, align 8, !tbaa !43
  %254 = or disjoint i64 %240, 3
  %255 = getelementptr i8, ptr %241, i64 32
  %256 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %254, i64 %198
  %257 = load double, ptr %256, align 8
  store double %257, ptr %251, align 8, !tbaa !43
  %258 = add nuw nsw i64 %240, 4
  %259 = add i64 %242, 4
  %260 = icmp eq i64 %259, %238
  br i1 %260, label %261, label %239, !llvm.loop !158

261:                                              ; preds = %239, %234
  %262 = phi ptr [ poison, %234 ], [ %255, %239 ]
  %263 = phi i64 [ 0, %234 ], [ %258, %239 ]
  %264 = phi ptr [ %231, %234 ], [ %255, %239 ]
  %265 = icmp eq i64 %235, 0
  br i1 %265, label %276, label %266

266:                                              ; preds = %261, %266
  %267 = phi i64 [ %273, %266 ], [ %263, %261 ]
  %268 = phi ptr [ %270, %266 ], [ %264, %261 ]
  %269 = phi i64 [ %274, %266 ], [ 0, %261 ]
  %270 = getelementptr i8, ptr %268, i64 8
  %271 = getelementptr inbounds nuw <2 x double>, ptr %28, i64 %267, i64 %198
  %272 = load double, ptr %271, align 8
  store double %272, ptr %268, align 8, !tbaa !43
  %273 = add nuw nsw i64 %267, 1
  %274 = add i64 %269, 1
  %275 = icmp eq i64 %274, %235
  br i1 %275, label %276, label %266, !llvm.loop !164

276:                                              ; preds = %261, %266, %230
  %277 = phi ptr [ %231, %230 ], [ %262, %261 ], [ %270, %266 ]
  %278 = load i64, ptr %37, align 8, !tbaa !45
  %279 = icmp eq i64 %278, 0
  br i1 %279, label %336, label %280

280:                                              ; preds = %276
  %281 = getelementptr inbounds nuw double, ptr %36, i64 %198
  %282 = load double, ptr %281, align 8, !tbaa !43
  %283 = getelementptr inbounds nuw i8, ptr %277, i64 8
  store double %282, ptr %277, align 8, !tbaa !43
  %284 = getelementptr inbounds nuw i8, ptr %281, i64 16
  %285 = load double, ptr %284, align 8, !tbaa !43
  %286 = getelementptr inbounds nuw i8, ptr %277, i64 16
  store double %285, ptr %283, align 8, !tbaa !43
  %287 = getelementptr inbounds nuw i8, ptr %281, i64 32
  %288 = load double, ptr %287, align 8, !tbaa !43
  store double %288, ptr %286, align 8, !tbaa !43
  br i1 %233, label %297, label %336

289:                                              ; preds = %223, %289
  %290 = phi ptr [ %295, %289 ], [ %191, %223 ]
  %291 = phi ptr [ %294, %289 ], [ %229, %223 ]
  %292 = getelementptr inbounds nuw double, ptr %290, i64 %198
  %293 = load double, ptr %292, align 8, !tbaa !43
  %294 = getelementptr inbounds nuw i8, ptr %291, i64 8
  store double %293, ptr %291, align 8, !tbaa !43
  %295 = getelementptr inbounds nuw i8, ptr %290, i64 16
  %296 = icmp ult ptr %295, %28
  br i1 %296, label %289, label %230, !llvm.loop !160

297:                                              ; preds = %280
  %298 = getelementptr inbounds nuw i8, ptr %277, i64 24
  br label %299

299:                                              ; preds = %297, %299
  %300 = phi i64 [ %334, %299 ], [ 0, %297 ]
  %301 = phi ptr [ %333, %299 ], [ %298, %297 ]
  %302 = mul nuw nsw i64 %300, 160
  %303 = getelementptr inbounds nuw i8, ptr %194, i64 %302
  %304 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 0, i64 %198
  %305 = load double, ptr %304, align 8
  %306 = getelementptr inbounds nuw i8, ptr %301, i64 8
  store double %305, ptr %301, align 8, !tbaa !43
  %307 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 1, i64 %198
  %308 = load double, ptr %307, align 8
  %309 = getelementptr inbounds nuw i8, ptr %301, i64 16
  store double %308, ptr %306, align 8, !tbaa !43
  %310 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 2, i64 %198
  %311 = load double, ptr %310, align 8
  %312 = getelementptr inbounds nuw i8, ptr %301, i64 24
  store double %311, ptr %309, align 8, !tbaa !43
  %313 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 3, i64 %198
  %314 = load double, ptr %313, align 8
  %315 = getelementptr inbounds nuw i8, ptr %301, i64 32
  store double %314, ptr %312, align 8, !tbaa !43
  %316 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 4, i64 %198
  %317 = load double, ptr %316, align 8
  %318 = getelementptr inbounds nuw i8, ptr %301, i64 40
  store double %317, ptr %315, align 8, !tbaa !43
  %319 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 5, i64 %198
  %320 = load double, ptr %319, align 8
  %321 = getelementptr inbounds nuw i8, ptr %301, i64 48
  store double %320, ptr %318, align 8, !tbaa !43
  %322 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 6, i64 %198
  %323 = load double, ptr %322, align 8
  %324 = getelementptr inbounds nuw i8, ptr %301, i64 56
  store double %323, ptr %321, align 8, !tbaa !43
  %325 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 7, i64 %198
  %326 = load double, ptr %325, align 8
  %327 = getelementptr inbounds nuw i8, ptr %301, i64 64
  store double %326, ptr %324, align 8, !tbaa !43
  %328 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 8, i64 %198
  %329 = load double, ptr %328, align 8
  %330 = getelementptr inbounds nuw i8, ptr %301, i64 72
  store double %329, ptr %327, align 8, !tbaa !43
  %331 = getelementptr inbounds nuw <2 x double>, ptr %303, i64 9, i64 %198
  %332 = load double, ptr %331, align 8
  %333 = getelementptr inbounds nuw i8, ptr %301, i64 80
  store double %332, ptr %330, align 8, !tbaa !43
  %334 = add nuw nsw i64 %300, 1
  %335 = icmp eq i64 %334, %232
  br i1 %335, label %336, label %299, !llvm.loop !158

336:                                              ; preds = %299, %280, %276, %195
  br i1 %196, label %195, label %337, !llvm.loop !161

337:                                              ; preds = %336
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1600) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 2) %2, i64 noundef %3) unnamed_addr #3 {
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
  %22 = load ptr, ptr %21, align 8, !tbaa !165
  %23 = mul i64 %3, 296
  %24 = getelementptr i8, ptr %22, i64 %23
  %25 = getelementptr inbounds nuw double, ptr %0, i64 %6
  br label %40

26:                                               ; preds = %40
  %27 = getelementptr inbounds nuw i8, ptr %0, i64 600
  %28 = load i64, ptr %27, align 8, !tbaa !20
  %29 = icmp sgt i64 %28, 0
  br i1 %29, label %30, label %60

30:                                               ; preds = %26
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 1592
  %32 = load ptr, ptr %31, align 8, !tbaa !28
  %33 = getelementptr inbounds nuw i8, ptr %0, i64 608
  %34 = getelementptr inbounds nuw i8, ptr %0, i64 616
  %35 = getelementptr inbounds nuw i8, ptr %0, i64 592
  %36 = getelementptr inbounds nuw i8, ptr %1, i64 72
  %37 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %39 = load ptr, ptr %38, align 8, !tbaa !166
  br label %159

40:                                               ; preds = %46, %4
  %41 = phi i64 [ 0, %4 ], [ %59, %46 ]
  %42 = getelementptr double, ptr %24, i64 %41
  %43 = load double, ptr %42, align 8, !tbaa !43
  %44 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %41
  store double %43, ptr %44, align 8, !tbaa !43
  %45 = icmp eq i64 %41, 36
  br i1 %45, label %26, label %46, !llvm.loop !167

46:                                               ; preds = %40
  %47 = or disjoint i64 %41, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !43
  %50 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !43
  %51 = or disjoint i64 %41, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !43
  %54 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !43
  %55 = or disjoint i64 %41, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !43
  %58 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !43
  %59 = add nuw nsw i64 %41, 4
  br label %40

60:                                               ; preds = %572, %26
  %61 = getelementptr inbounds nuw i8, ptr %0, i64 656
  %62 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 848
  %64 = getelementptr inbounds nuw i8, ptr %0, i64 336
  %65 = getelementptr inbounds nuw double, ptr %64, i64 %6
  %66 = getelementptr inbounds nuw i8, ptr %0, i64 320
  %67 = getelementptr inbounds nuw double, ptr %66, i64 %6
  %68 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %69 = getelementptr inbounds nuw double, ptr %68, i64 %6
  %70 = getelementptr inbounds nuw double, ptr %61, i64 %6
  %71 = getelementptr inbounds nuw i8, ptr %70, i64 64
  store double 0.000000e+00, ptr %71, align 8, !tbaa !43
  %72 = getelementptr inbounds nuw i8, ptr %70, i64 80
  store double 0.000000e+00, ptr %72, align 8, !tbaa !43
  %73 = load double, ptr %65, align 8, !tbaa !43
  store double %73, ptr %70, align 8, !tbaa !43
  %74 = load double, ptr %67, align 8, !tbaa !43
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 704
  %76 = getelementptr inbounds nuw double, ptr %75, i64 %6
  store double %74, ptr %76, align 8, !tbaa !43
  %77 = load double, ptr %69, align 8, !tbaa !43
  %78 = getelementptr inbounds nuw i8, ptr %0, i64 688
  %79 = getelementptr inbounds nuw double, ptr %78, i64 %6
  store double %77, ptr %79, align 8, !tbaa !43
  %80 = getelementptr inbounds nuw i8, ptr %0, i64 672
  %81 = getelementptr inbounds nuw double, ptr %80, i64 %6
  store double %77, ptr %81, align 8, !tbaa !43
  %82 = getelementptr inbounds nuw double, ptr %62, i64 %6
  %83 = getelementptr inbounds nuw i8, ptr %82, i64 64
  store double 0.000000e+00, ptr %83, align 8, !tbaa !43
  %84 = getelementptr inbounds nuw i8, ptr %82, i64 80
  store double 0.000000e+00, ptr %84, align 8, !tbaa !43
  store double %73, ptr %82, align 8, !tbaa !43
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 800
  %86 = getelementptr inbounds nuw double, ptr %85, i64 %6
  store double %74, ptr %86, align 8, !tbaa !43
  %87 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %88 = getelementptr inbounds nuw double, ptr %87, i64 %6
  store double %77, ptr %88, align 8, !tbaa !43
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %6
  store double %77, ptr %90, align 8, !tbaa !43
  %91 = getelementptr inbounds nuw double, ptr %63, i64 %6
  %92 = getelementptr inbounds nuw i8, ptr %91, i64 64
  store double 0.000000e+00, ptr %92, align 8, !tbaa !43
  %93 = getelementptr inbounds nuw i8, ptr %91, i64 80
  store double 0.000000e+00, ptr %93, align 8, !tbaa !43
  store double %73, ptr %91, align 8, !tbaa !43
  %94 = getelementptr inbounds nuw i8, ptr %0, i64 896
  %95 = getelementptr inbounds nuw double, ptr %94, i64 %6
  store double %74, ptr %95, align 8, !tbaa !43
  %96 = getelementptr inbounds nuw i8, ptr %0, i64 880
  %97 = getelementptr inbounds nuw double, ptr %96, i64 %6
  store double %77, ptr %97, align 8, !tbaa !43
  %98 = getelementptr inbounds nuw i8, ptr %0, i64 864
  %99 = getelementptr inbounds nuw double, ptr %98, i64 %6
  store double %77, ptr %99, align 8, !tbaa !43
  %100 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %101 = getelementptr inbounds nuw double, ptr %100, i64 %6
  %102 = load double, ptr %101, align 8, !tbaa !43
  %103 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %104 = getelementptr inbounds nuw double, ptr %103, i64 %6
  store double %102, ptr %104, align 8, !tbaa !43
  %105 = getelementptr inbounds nuw i8, ptr %0, i64 1040
  %106 = getelementptr inbounds nuw double, ptr %105, i64 %6
  store double %102, ptr %106, align 8, !tbaa !43
  %107 = getelementptr inbounds nuw i8, ptr %0, i64 1184
  %108 = getelementptr inbounds nuw double, ptr %107, i64 %6
  store double 1.000000e+09, ptr %108, align 8, !tbaa !43
  %109 = getelementptr inbounds nuw i8, ptr %0, i64 1232
  %110 = getelementptr inbounds nuw double, ptr %109, i64 %6
  store double 0.000000e+00, ptr %110, align 8, !tbaa !43
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %112 = getelementptr inbounds nuw double, ptr %111, i64 %6
  %113 = load double, ptr %112, align 8, !tbaa !43
  %114 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %115 = getelementptr inbounds nuw double, ptr %114, i64 %6
  store double %113, ptr %115, align 8, !tbaa !43
  %116 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %117 = getelementptr inbounds nuw double, ptr %116, i64 %6
  store double %113, ptr %117, align 8, !tbaa !43
  %118 = getelementptr inbounds nuw i8, ptr %0, i64 560
  %119 = getelementptr inbounds nuw double, ptr %118, i64 %6
  %120 = load double, ptr %119, align 8, !tbaa !43
  %121 = getelementptr inbounds nuw i8, ptr %0, i64 1312
  %122 = getelementptr inbounds nuw double, ptr %121, i64 %6
  store double %120, ptr %122, align 8, !tbaa !43
  %123 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 1152
  %126 = getelementptr inbounds nuw i8, ptr %0, i64 1168
  %127 = getelementptr inbounds nuw i8, ptr %0, i64 1248
  %128 = getelementptr inbounds nuw i8, ptr %0, i64 1264
  %129 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %130 = getelementptr inbounds nuw i8, ptr %0, i64 1296
  %131 = getelementptr inbounds nuw i8, ptr %0, i64 1328
  %132 = getelementptr inbounds nuw i8, ptr %0, i64 1344
  %133 = getelementptr inbounds nuw i8, ptr %0, i64 1360
  %134 = getelementptr inbounds nuw i8, ptr %0, i64 1376
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 1392
  %136 = getelementptr inbounds nuw double, ptr %123, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !43
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
  %149 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %150 = getelementptr inbounds nuw i64, ptr %149, i64 %6
  store i64 0, ptr %150, align 8, !tbaa !30
  %151 = getelementptr inbounds nuw i8, ptr %0, i64 1472
  %152 = getelementptr inbounds nuw i64, ptr %151, i64 %6
  store i64 0, ptr %152, align 8, !tbaa !30
  %153 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %154 = getelementptr inbounds nuw i64, ptr %153, i64 %6
  store i64 -1, ptr %154, align 8, !tbaa !30
  %155 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %156 = getelementptr inbounds nuw i64, ptr %155, i64 %6
  store i64 -1, ptr %156, align 8, !tbaa !30
  %157 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %158 = getelementptr inbounds nuw i64, ptr %157, i64 %6
  store i64 -1, ptr %158, align 8, !tbaa !30
  ret void

159:                                              ; preds = %30, %572
  %160 = phi i64 [ 0, %30 ], [ %573, %572 ]
  %161 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %160
  %162 = load i64, ptr %33, align 16, !tbaa !21
  %163 = load i64, ptr %34, align 8, !tbaa !22
  %164 = load i64, ptr %35, align 16, !tbaa !16
  %165 = mul nsw i64 %164, %3
  %166 = add nsw i64 %165, %160
  %167 = getelementptr inbounds nuw i8, ptr %161, i64 2128
  %168 = load i64, ptr %167, align 16, !tbaa !31
  %169 = load ptr, ptr %36, align 8, !tbaa !168
  %170 = mul i64 %166, 368
  %171 = getelementptr i8, ptr %169, i64 %170
  %172 = getelementptr inbounds nuw double, ptr %161, i64 %6
  br label %189

173:                                              ; preds = %189
  %174 = icmp eq i64 %168, 0
  %175 = load ptr, ptr %37, align 8, !tbaa !169
  %176 = getelementptr inbounds i64, ptr %39, i64 %166
  %177 = load i64, ptr %176, align 8, !tbaa !30
  %178 = mul nsw i64 %162, 3
  %179 = add nsw i64 %162, 1
  %180 = select i1 %174, i64 0, i64 2
  %181 = shl i64 %179, %180
  %182 = add nsw i64 %181, %178
  %183 = mul nsw i64 %177, %182
  %184 = getelementptr inbounds double, ptr %175, i64 %183
  %185 = getelementptr inbounds nuw i8, ptr %161, i64 240
  %186 = getelementptr inbounds nuw double, ptr %185, i64 %6
  %187 = load double, ptr %186, align 8, !tbaa !43
  %188 = load double, ptr %172, align 8, !tbaa !43
  br i1 %174, label %200, label %205

189:                                              ; preds = %189, %159
  %190 = phi i64 [ 0, %159 ], [ %198, %189 ]
  %191 = getelementptr double, ptr %171, i64 %190
  %192 = load double, ptr %191, align 8, !tbaa !43
  %193 = getelementptr inbounds nuw <2 x double>, ptr %172, i64 %190
  store double %192, ptr %193, align 8, !tbaa !43
  %194 = or disjoint i64 %190, 1
  %195 = getelementptr double, ptr %171, i64 %194
  %196 = load double, ptr %195, align 8, !tbaa !43
  %197 = getelementptr inbounds nuw <2 x double>, ptr %172, i64 %194
  store double %196, ptr %197, align 8, !tbaa !43
  %198 = add nuw nsw i64 %190, 2
  %199 = icmp eq i64 %198, 46
  br i1 %199, label %173, label %189, !llvm.loop !170

200:                                              ; preds = %173
  %201 = getelementptr inbounds nuw i8, ptr %161, i64 2136
  %202 = getelementptr inbounds nuw [2 x ptr], ptr %201, i64 0, i64 %6
  %203 = load ptr, ptr %202, align 8, !tbaa !155
  %204 = icmp ne ptr %203, %184
  br label %205

205:                                              ; preds = %200, %173
  %206 = phi i1 [ true, %173 ], [ %204, %200 ]
  %207 = getelementptr inbounds nuw i8, ptr %161, i64 2136
  %208 = getelementptr inbounds nuw [2 x ptr], ptr %207, i64 0, i64 %6
  store ptr %184, ptr %208, align 8, !tbaa !155
  %209 = icmp sgt i64 %162, 0
  %210 = select i1 %209, i1 %206, i1 false
  br i1 %210, label %211, label %241

211:                                              ; preds = %205
  %212 = getelementptr inbounds nuw i8, ptr %161, i64 2240
  %213 = load ptr, ptr %212, align 16, !tbaa !74
  %214 = getelementptr inbounds nuw double, ptr %213, i64 %6
  %215 = getelementptr double, ptr %184, i64 %162
  %216 = getelementptr inbounds nuw i8, ptr %161, i64 2248
  %217 = load ptr, ptr %216, align 8, !tbaa !50
  %218 = getelementptr inbounds nuw double, ptr %217, i64 %6
  %219 = shl i64 %162, 4
  %220 = getelementptr i8, ptr %184, i64 %219
  %221 = getelementptr inbounds nuw i8, ptr %161, i64 2256
  %222 = load ptr, ptr %221, align 16, !tbaa !140
  %223 = getelementptr inbounds nuw double, ptr %222, i64 %6
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
  %233 = load double, ptr %232, align 8, !tbaa !43
  %234 = getelementptr inbounds nuw <2 x double>, ptr %214, i64 %229
  store double %233, ptr %234, align 8, !tbaa !43
  %235 = getelementptr double, ptr %215, i64 %229
  %236 = load double, ptr %235, align 8, !tbaa !43
  %237 = getelementptr inbounds nuw <2 x double>, ptr %218, i64 %229
  store double %236, ptr %237, align 8, !tbaa !43
  %238 = getelementptr double, ptr %220, i64 %229
  %239 = load double, ptr %238, align 8, !tbaa !43
  %240 = getelementptr inbounds nuw <2 x double>, ptr %223, i64 %229
  store double %239, ptr %240, align 8, !tbaa !43
  br label %241

241:                                              ; preds = %231, %228, %205
  %242 = icmp sgt i64 %181, 0
  %243 = select i1 %242, i1 %206, i1 false
  br i1 %243, label %244, label %290

244:                                              ; preds = %241
  %245 = getelementptr double, ptr %184, i64 %178
  %246 = getelementptr inbounds nuw i8, ptr %161, i64 2264
  %247 = load ptr, ptr %246, align 8, !tbaa !36
  %248 = getelementptr inbounds nuw double, ptr %247, i64 %6
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
  %257 = load double, ptr %256, align 8, !tbaa !43
  %258 = getelementptr inbounds nuw <2 x double>, ptr %214, i64 %254
  store double %257, ptr %258, align 8, !tbaa !43
  %259 = getelementptr double, ptr %215, i64 %254
  %260 = load double, ptr %259, align 8, !tbaa !43
  %261 = getelementptr inbounds nuw <2 x double>, ptr %218, i64 %254
  store double %260, ptr %261, align 8, !tbaa !43
  %262 = getelementptr double, ptr %220, i64 %254
  %263 = load double, ptr %262, align 8, !tbaa !43
  %264 = getelementptr inbounds nuw <2 x double>, ptr %223, i64 %254
  store double %263, ptr %264, align 8, !tbaa !43
  %265 = or disjoint i64 %254, 1
  %266 = getelementptr inbounds nuw double, ptr %184, i64 %265
  %267 = load double, ptr %266, align 8, !tbaa !43
  %268 = getelementptr inbounds nuw <2 x double>, ptr %214, i64 %265
  store double %267, ptr %268, align 8, !tbaa !43
  %269 = getelementptr double, ptr %215, i64 %265
  %270 = load double, ptr %269, align 8, !tbaa !43
  %271 = getelementptr inbounds nuw <2 x double>, ptr %218, i64 %265
  store double %270, ptr %271, align 8, !tbaa !43
  %272 = getelementptr double, ptr %220, i64 %265
  %273 = load double, ptr %272, align 8, !tbaa !43
  %274 = getelementptr inbounds nuw <2 x double>, ptr %223, i64 %265
  store double %273, ptr %274, align 8, !tbaa !43
  %275 = add nuw nsw i64 %254, 2
  %276 = add i64 %255, 2
  %277 = icmp eq i64 %276, %227
  br i1 %277, label %228, label %253, !llvm.loop !171

278:                                              ; preds = %299, %244
  %279 = phi i64 [ 0, %244 ], [ %317, %299 ]
  %280 = icmp eq i64 %249, 0
  br i1 %280, label %290, label %281

281:                                              ; preds = %278, %281
  %282 = phi i64 [ %287, %281 ], [ %279, %278 ]
  %283 = phi i64 [ %288, %281 ], [ 0, %278 ]
  %284 = getelementptr double, ptr %245, i64 %282
  %285 = load double, ptr %284, align 8, !tbaa !43
  %286 = getelementptr inbounds nuw <2 x double>, ptr %248, i64 %282
  store double %285, ptr %286, align 8, !tbaa !43
  %287 = add nuw nsw i64 %282, 1
  %288 = add i64 %283, 1
  %289 = icmp eq i64 %288, %249
  br i1 %289, label %290, label %281, !llvm.loop !172

290:                                              ; preds = %278, %281, %241
  %291 = icmp ne i64 %168, 0
  %292 = icmp sgt i64 %162, -1
  %293 = select i1 %291, i1 %292, i1 false
  br i1 %293, label %294, label %320

294:                                              ; preds = %290
  %295 = fdiv double 1.000000e+00, %188
  %296 = getelementptr inbounds nuw i8, ptr %161, i64 2264
  %297 = load ptr, ptr %296, align 8, !tbaa !36
  %298 = getelementptr inbounds nuw double, ptr %297, i64 %6
  br label %460

299:                                              ; preds = %299, %251
  %300 = phi i64 [ 0, %251 ], [ %317, %299 ]
  %301 = phi i64 [ 0, %251 ], [ %318, %299 ]
  %302 = getelementptr double, ptr %245, i64 %300
  %303 = load double, ptr %302, align 8, !tbaa !43
  %304 = getelementptr inbounds nuw <2 x double>, ptr %248, i64 %300
  store double %303, ptr %304, align 8, !tbaa !43
  %305 = or disjoint i64 %300, 1
  %306 = getelementptr double, ptr %245, i64 %305
  %307 = load double, ptr %306, align 8, !tbaa !43
  %308 = getelementptr inbounds nuw <2 x double>, ptr %248, i64 %305
  store double %307, ptr %308, align 8, !tbaa !43
  %309 = or disjoint i64 %300, 2
  %310 = getelementptr double, ptr %245, i64 %309
  %311 = load double, ptr %310, align 8, !tbaa !43
  %312 = getelementptr inbounds nuw <2 x double>, ptr %248, i64 %309
  store double %311, ptr %312, align 8, !tbaa !43
  %313 = or disjoint i64 %300, 3
  %314 = getelementptr double, ptr %245, i64 %313
  %315 = load double, ptr %314, align 8, !tbaa !43
  %316 = getelementptr inbounds nuw <2 x double>, ptr %248, i64 %313
  store double %315, ptr %316, align 8, !tbaa !43
  %317 = add nuw nsw i64 %300, 4
  %318 = add i64 %301, 4
  %319 = icmp eq i64 %318, %252
  br i1 %319, label %278, label %299, !llvm.loop !173

320:                                              ; preds = %460, %290
  %321 = getelementptr inbounds nuw i8, ptr %161, i64 640
  %322 = getelementptr inbounds nuw double, ptr %321, i64 %6
  %323 = load double, ptr %322, align 8, !tbaa !43
  %324 = getelementptr inbounds nuw i8, ptr %161, i64 656
  %325 = getelementptr inbounds nuw double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !43
  %327 = getelementptr inbounds nuw i8, ptr %161, i64 672
  %328 = getelementptr inbounds nuw double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !43
  %330 = getelementptr inbounds nuw i8, ptr %161, i64 688
  %331 = getelementptr inbounds nuw double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !43
  %333 = tail call double @llvm.fmuladd.f64(double %188, double %332, double %329)
  %334 = tail call double @llvm.fmuladd.f64(double %188, double %333, double %326)
  %335 = tail call double @llvm.fmuladd.f64(double %188, double %334, double %323)
  %336 = getelementptr inbounds nuw i8, ptr %161, i64 208
  %337 = getelementptr inbounds nuw double, ptr %336, i64 %6
  %338 = load double, ptr %337, align 8, !tbaa !43
  %339 = getelementptr inbounds nuw i8, ptr %161, i64 352
  %340 = getelementptr inbounds nuw double, ptr %339, i64 %6
  %341 = load double, ptr %340, align 8, !tbaa !43
  %342 = getelementptr inbounds nuw i8, ptr %161, i64 384
  %343 = getelementptr inbounds nuw double, ptr %342, i64 %6
  %344 = load double, ptr %343, align 8, !tbaa !43
  %345 = fsub double %341, %344
  %346 = fmul double %338, %345
  %347 = getelementptr inbounds nuw i8, ptr %161, i64 736
  %348 = getelementptr inbounds nuw i8, ptr %161, i64 960
  %349 = getelementptr inbounds nuw i8, ptr %161, i64 1184
  %350 = getelementptr inbounds nuw i8, ptr %161, i64 224
  %351 = getelementptr inbounds nuw double, ptr %350, i64 %6
  %352 = getelementptr inbounds nuw i8, ptr %161, i64 256
  %353 = getelementptr inbounds nuw double, ptr %352, i64 %6
  %354 = getelementptr inbounds nuw double, ptr %347, i64 %6
  %355 = getelementptr inbounds nuw i8, ptr %354, i64 80
  store double 0.000000e+00, ptr %355, align 8, !tbaa !43
  %356 = getelementptr inbounds nuw i8, ptr %354, i64 96
  store double 0.000000e+00, ptr %356, align 8, !tbaa !43
  %357 = getelementptr inbounds nuw i8, ptr %354, i64 112
  store double 0.000000e+00, ptr %357, align 8, !tbaa !43
  %358 = getelementptr inbounds nuw i8, ptr %354, i64 128
  store double 0.000000e+00, ptr %358, align 8, !tbaa !43
  %359 = getelementptr inbounds nuw i8, ptr %354, i64 144
  store double 0.000000e+00, ptr %359, align 8, !tbaa !43
  %360 = getelementptr inbounds nuw i8, ptr %354, i64 176
  store double 0.000000e+00, ptr %360, align 8, !tbaa !43
  %361 = getelementptr inbounds nuw i8, ptr %354, i64 192
  store double 0.000000e+00, ptr %361, align 8, !tbaa !43
  store double %188, ptr %354, align 8, !tbaa !43
  %362 = getelementptr inbounds nuw i8, ptr %161, i64 752
  %363 = getelementptr inbounds nuw double, ptr %362, i64 %6
  store double %341, ptr %363, align 8, !tbaa !43
  %364 = load double, ptr %351, align 8, !tbaa !43
  %365 = getelementptr inbounds nuw i8, ptr %161, i64 768
  %366 = getelementptr inbounds nuw double, ptr %365, i64 %6
  store double %364, ptr %366, align 8, !tbaa !43
  %367 = getelementptr inbounds nuw i8, ptr %161, i64 784
  %368 = getelementptr inbounds nuw double, ptr %367, i64 %6
  store double %346, ptr %368, align 8, !tbaa !43
  %369 = getelementptr inbounds nuw i8, ptr %161, i64 896
  %370 = getelementptr inbounds nuw double, ptr %369, i64 %6
  store double %187, ptr %370, align 8, !tbaa !43
  %371 = load double, ptr %353, align 8, !tbaa !43
  %372 = getelementptr inbounds nuw i8, ptr %161, i64 800
  %373 = getelementptr inbounds nuw double, ptr %372, i64 %6
  store double %371, ptr %373, align 8, !tbaa !43
  %374 = getelementptr inbounds nuw i8, ptr %161, i64 944
  %375 = getelementptr inbounds nuw double, ptr %374, i64 %6
  store double %335, ptr %375, align 8, !tbaa !43
  %376 = getelementptr inbounds nuw double, ptr %348, i64 %6
  %377 = getelementptr inbounds nuw i8, ptr %376, i64 80
  store double 0.000000e+00, ptr %377, align 8, !tbaa !43
  %378 = getelementptr inbounds nuw i8, ptr %376, i64 96
  store double 0.000000e+00, ptr %378, align 8, !tbaa !43
  %379 = getelementptr inbounds nuw i8, ptr %376, i64 112
  store double 0.000000e+00, ptr %379, align 8, !tbaa !43
  %380 = getelementptr inbounds nuw i8, ptr %376, i64 128
  store double 0.000000e+00, ptr %380, align 8, !tbaa !43
  %381 = getelementptr inbounds nuw i8, ptr %376, i64 144
  store double 0.000000e+00, ptr %381, align 8, !tbaa !43
  %382 = getelementptr inbounds nuw i8, ptr %376, i64 176
  store double 0.000000e+00, ptr %382, align 8, !tbaa !43
  %383 = getelementptr inbounds nuw i8, ptr %376, i64 192
  store double 0.000000e+00, ptr %383, align 8, !tbaa !43
  store double %188, ptr %376, align 8, !tbaa !43
  %384 = getelementptr inbounds nuw i8, ptr %161, i64 976
  %385 = getelementptr inbounds nuw double, ptr %384, i64 %6
  store double %341, ptr %385, align 8, !tbaa !43
  %386 = getelementptr inbounds nuw i8, ptr %161, i64 992
  %387 = getelementptr inbounds nuw double, ptr %386, i64 %6
  store double %364, ptr %387, align 8, !tbaa !43
  %388 = getelementptr inbounds nuw i8, ptr %161, i64 1008
  %389 = getelementptr inbounds nuw double, ptr %388, i64 %6
  store double %346, ptr %389, align 8, !tbaa !43
  %390 = getelementptr inbounds nuw i8, ptr %161, i64 1120
  %391 = getelementptr inbounds nuw double, ptr %390, i64 %6
  store double %187, ptr %391, align 8, !tbaa !43
  %392 = getelementptr inbounds nuw i8, ptr %161, i64 1024
  %393 = getelementptr inbounds nuw double, ptr %392, i64 %6
  store double %371, ptr %393, align 8, !tbaa !43
  %394 = getelementptr inbounds nuw i8, ptr %161, i64 1168
  %395 = getelementptr inbounds nuw double, ptr %394, i64 %6
  store double %335, ptr %395, align 8, !tbaa !43
  %396 = getelementptr inbounds nuw double, ptr %349, i64 %6
  %397 = getelementptr inbounds nuw i8, ptr %396, i64 80
  store double 0.000000e+00, ptr %397, align 8, !tbaa !43
  %398 = getelementptr inbounds nuw i8, ptr %396, i64 96
  store double 0.000000e+00, ptr %398, align 8, !tbaa !43
  %399 = getelementptr inbounds nuw i8, ptr %396, i64 112
  store double 0.000000e+00, ptr %399, align 8, !tbaa !43
  %400 = getelementptr inbounds nuw i8, ptr %396, i64 128
  store double 0.000000e+00, ptr %400, align 8, !tbaa !43
  %401 = getelementptr inbounds nuw i8, ptr %396, i64 144
  store double 0.000000e+00, ptr %401, align 8, !tbaa !43
  %402 = getelementptr inbounds nuw i8, ptr %396, i64 176
  store double 0.000000e+00, ptr %402, align 8, !tbaa !43
  %403 = getelementptr inbounds nuw i8, ptr %396, i64 192
  store double 0.000000e+00, ptr %403, align 8, !tbaa !43
  store double %188, ptr %396, align 8, !tbaa !43
  %404 = load double, ptr %340, align 8, !tbaa !43
  %405 = getelementptr inbounds nuw i8, ptr %161, i64 1200
  %406 = getelementptr inbounds nuw double, ptr %405, i64 %6
  store double %404, ptr %406, align 8, !tbaa !43
  %407 = getelementptr inbounds nuw i8, ptr %161, i64 1216
  %408 = getelementptr inbounds nuw double, ptr %407, i64 %6
  store double %364, ptr %408, align 8, !tbaa !43
  %409 = getelementptr inbounds nuw i8, ptr %161, i64 1232
  %410 = getelementptr inbounds nuw double, ptr %409, i64 %6
  store double %346, ptr %410, align 8, !tbaa !43
  %411 = getelementptr inbounds nuw i8, ptr %161, i64 1344
  %412 = getelementptr inbounds nuw double, ptr %411, i64 %6
  store double %187, ptr %412, align 8, !tbaa !43
  %413 = getelementptr inbounds nuw i8, ptr %161, i64 1248
  %414 = getelementptr inbounds nuw double, ptr %413, i64 %6
  store double %371, ptr %414, align 8, !tbaa !43
  %415 = getelementptr inbounds nuw i8, ptr %161, i64 1392
  %416 = getelementptr inbounds nuw double, ptr %415, i64 %6
  store double %335, ptr %416, align 8, !tbaa !43
  %417 = load double, ptr %351, align 8, !tbaa !43
  %418 = fadd double %346, %417
  %419 = getelementptr inbounds nuw i8, ptr %161, i64 400
  %420 = getelementptr inbounds nuw double, ptr %419, i64 %6
  store double %418, ptr %420, align 8, !tbaa !43
  %421 = fcmp ogt double %417, 0.000000e+00
  %422 = fdiv double 1.000000e+00, %417
  %423 = select i1 %421, double %422, double 0.000000e+00
  %424 = getelementptr inbounds nuw i8, ptr %161, i64 1920
  %425 = getelementptr inbounds nuw double, ptr %424, i64 %6
  store double %423, ptr %425, align 8, !tbaa !43
  %426 = getelementptr inbounds nuw i8, ptr %161, i64 176
  %427 = getelementptr inbounds nuw double, ptr %426, i64 %6
  %428 = load double, ptr %427, align 8, !tbaa !43
  %429 = fdiv double 1.000000e+00, %428
  %430 = getelementptr inbounds nuw i8, ptr %161, i64 1936
  %431 = getelementptr inbounds nuw double, ptr %430, i64 %6
  store double %429, ptr %431, align 8, !tbaa !43
  %432 = load double, ptr %337, align 8, !tbaa !43
  %433 = fdiv double 1.000000e+00, %432
  %434 = getelementptr inbounds nuw i8, ptr %161, i64 1952
  %435 = getelementptr inbounds nuw double, ptr %434, i64 %6
  store double %433, ptr %435, align 8, !tbaa !43
  %436 = getelementptr inbounds nuw i8, ptr %161, i64 1488
  %437 = getelementptr inbounds nuw i8, ptr %161, i64 1696
  %438 = getelementptr inbounds nuw i8, ptr %161, i64 1712
  %439 = getelementptr inbounds nuw i8, ptr %161, i64 1888
  %440 = getelementptr inbounds nuw double, ptr %436, i64 %6
  store double %187, ptr %440, align 8, !tbaa !43
  %441 = getelementptr inbounds nuw double, ptr %437, i64 %6
  store double %187, ptr %441, align 8, !tbaa !43
  %442 = getelementptr inbounds nuw double, ptr %438, i64 %6
  store double %187, ptr %442, align 8, !tbaa !43
  %443 = getelementptr inbounds nuw double, ptr %439, i64 %6
  store double %187, ptr %443, align 8, !tbaa !43
  %444 = getelementptr inbounds nuw i8, ptr %161, i64 1504
  %445 = getelementptr inbounds nuw i8, ptr %161, i64 1520
  %446 = getelementptr inbounds nuw i8, ptr %161, i64 1904
  %447 = getelementptr inbounds nuw i8, ptr %161, i64 1872
  %448 = getelementptr inbounds nuw i8, ptr %161, i64 1808
  %449 = getelementptr inbounds nuw double, ptr %444, i64 %6
  store double 0.000000e+00, ptr %449, align 8, !tbaa !43
  %450 = getelementptr inbounds nuw double, ptr %445, i64 %6
  store double 0.000000e+00, ptr %450, align 8, !tbaa !43
  %451 = getelementptr inbounds nuw double, ptr %446, i64 %6
  store double 0.000000e+00, ptr %451, align 8, !tbaa !43
  %452 = getelementptr inbounds nuw double, ptr %447, i64 %6
  store double 0.000000e+00, ptr %452, align 8, !tbaa !43
  %453 = getelementptr inbounds nuw double, ptr %448, i64 %6
  store double 0.000000e+00, ptr %453, align 8, !tbaa !43
  %454 = getelementptr inbounds nuw i8, ptr %161, i64 2080
  %455 = getelementptr inbounds nuw i64, ptr %454, i64 %6
  store i64 0, ptr %455, align 8, !tbaa !30
  %456 = getelementptr inbounds nuw i8, ptr %161, i64 2096
  %457 = getelementptr inbounds nuw i64, ptr %456, i64 %6
  store i64 -1, ptr %457, align 8, !tbaa !30
  %458 = getelementptr inbounds nuw i8, ptr %161, i64 2112
  %459 = getelementptr inbounds nuw i64, ptr %458, i64 %6
  store i64 0, ptr %459, align 8, !tbaa !30
  br i1 %209, label %482, label %498

460:                                              ; preds = %294, %460
  %461 = phi i64 [ 0, %294 ], [ %480, %460 ]
  %462 = icmp slt i64 %461, %168
  %463 = select i1 %462, double %295, double 1.000000e+00
  %464 = shl nsw i64 %461, 6
  %465 = getelementptr inbounds nuw i8, ptr %298, i64 %464
  %466 = load double, ptr %465, align 8, !tbaa !43
  %467 = fmul double %463, %466
  store double %467, ptr %465, align 8, !tbaa !43
  %468 = fdiv double %463, %188
  %469 = getelementptr inbounds nuw i8, ptr %465, i64 16
  %470 = load double, ptr %469, align 8, !tbaa !43
  %471 = fmul double %468, %470
  store double %471, ptr %469, align 8, !tbaa !43
  %472 = fdiv double %468, %188
  %473 = getelementptr inbounds nuw i8, ptr %465, i64 32
  %474 = load double, ptr %473, align 8, !tbaa !43
  %475 = fmul double %472, %474
  store double %475, ptr %473, align 8, !tbaa !43
  %476 = fdiv double %472, %188
  %477 = getelementptr inbounds nuw i8, ptr %465, i64 48
  %478 = load double, ptr %477, align 8, !tbaa !43
  %479 = fmul double %476, %478
  store double %479, ptr %477, align 8, !tbaa !43
  %480 = add nuw nsw i64 %461, 1
  %481 = icmp slt i64 %461, %162
  br i1 %481, label %460, label %320, !llvm.loop !174

482:                                              ; preds = %320
  %483 = getelementptr inbounds nuw i8, ptr %161, i64 2168
  %484 = load ptr, ptr %483, align 8, !tbaa !58
  %485 = getelementptr inbounds nuw double, ptr %484, i64 %6
  %486 = getelementptr inbounds nuw i8, ptr %161, i64 2160
  %487 = load ptr, ptr %486, align 16, !tbaa !48
  %488 = getelementptr inbounds nuw double, ptr %487, i64 %6
  %489 = getelementptr inbounds nuw i8, ptr %161, i64 2152
  %490 = load ptr, ptr %489, align 8, !tbaa !59
  %491 = getelementptr inbounds nuw double, ptr %490, i64 %6
  %492 = getelementptr inbounds nuw i8, ptr %161, i64 2192
  %493 = load ptr, ptr %492, align 16, !tbaa !49
  %494 = getelementptr inbounds nuw double, ptr %493, i64 %6
  %495 = getelementptr inbounds nuw i8, ptr %161, i64 2184
  %496 = load ptr, ptr %495, align 8, !tbaa !66
  %497 = getelementptr inbounds nuw double, ptr %496, i64 %6
  br label %511

498:                                              ; preds = %511, %320
  %499 = icmp slt i64 %163, 0
  br i1 %499, label %572, label %500

500:                                              ; preds = %498
  %501 = getelementptr inbounds nuw i8, ptr %161, i64 2336
  %502 = load ptr, ptr %501, align 16, !tbaa !61
  %503 = getelementptr inbounds nuw double, ptr %502, i64 %6
  %504 = getelementptr inbounds nuw i8, ptr %161, i64 2328
  %505 = load ptr, ptr %504, align 8, !tbaa !51
  %506 = getelementptr inbounds nuw double, ptr %505, i64 %6
  %507 = icmp eq i64 %163, 0
  br i1 %507, label %520, label %508

508:                                              ; preds = %500
  %509 = add nuw i64 %163, 1
  %510 = and i64 %509, -2
  br label %545

511:                                              ; preds = %482, %511
  %512 = phi i64 [ 0, %482 ], [ %518, %511 ]
  %513 = getelementptr inbounds nuw <2 x double>, ptr %485, i64 %512
  store double %187, ptr %513, align 8, !tbaa !43
  %514 = getelementptr inbounds nuw <2 x double>, ptr %488, i64 %512
  store double %187, ptr %514, align 8, !tbaa !43
  %515 = getelementptr inbounds nuw <2 x double>, ptr %491, i64 %512
  store double %187, ptr %515, align 8, !tbaa !43
  %516 = getelementptr inbounds nuw <2 x double>, ptr %494, i64 %512
  store double 1.000000e+00, ptr %516, align 8, !tbaa !43
  %517 = getelementptr inbounds nuw <2 x double>, ptr %497, i64 %512
  store double 1.000000e+00, ptr %517, align 8, !tbaa !43
  %518 = add nuw nsw i64 %512, 1
  %519 = icmp eq i64 %518, %162
  br i1 %519, label %498, label %511, !llvm.loop !175

520:                                              ; preds = %559, %500
  %521 = phi i64 [ 0, %500 ], [ %563, %559 ]
  %522 = and i64 %163, 1
  %523 = icmp eq i64 %522, 0
  br i1 %523, label %524, label %532

524:                                              ; preds = %520
  %525 = icmp slt i64 %521, %163
  br i1 %525, label %528, label %526

526:                                              ; preds = %524
  %527 = load double, ptr %340, align 8, !tbaa !43
  br label %528

528:                                              ; preds = %526, %524
  %529 = phi double [ %527, %526 ], [ %335, %524 ]
  %530 = getelementptr inbounds nuw <2 x double>, ptr %503, i64 %521
  store double %529, ptr %530, align 8, !tbaa !43
  %531 = getelementptr inbounds nuw <2 x double>, ptr %506, i64 %521
  store double %529, ptr %531, align 8, !tbaa !43
  br label %532

532:                                              ; preds = %520, %528
  %533 = icmp eq i64 %163, 0
  br i1 %533, label %572, label %534

534:                                              ; preds = %532
  %535 = getelementptr inbounds nuw i8, ptr %161, i64 2288
  %536 = load ptr, ptr %535, align 16, !tbaa !63
  %537 = getelementptr inbounds nuw double, ptr %536, i64 %6
  %538 = getelementptr inbounds nuw i8, ptr %161, i64 2280
  %539 = load ptr, ptr %538, align 8, !tbaa !52
  %540 = getelementptr inbounds nuw double, ptr %539, i64 %6
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
  %550 = load double, ptr %340, align 8, !tbaa !43
  br label %551

551:                                              ; preds = %545, %549
  %552 = phi double [ %550, %549 ], [ %335, %545 ]
  %553 = getelementptr inbounds nuw <2 x double>, ptr %503, i64 %546
  store double %552, ptr %553, align 8, !tbaa !43
  %554 = getelementptr inbounds nuw <2 x double>, ptr %506, i64 %546
  store double %552, ptr %554, align 8, !tbaa !43
  %555 = or disjoint i64 %546, 1
  %556 = icmp slt i64 %555, %163
  br i1 %556, label %559, label %557

557:                                              ; preds = %551
  %558 = load double, ptr %340, align 8, !tbaa !43
  br label %559

559:                                              ; preds = %557, %551
  %560 = phi double [ %558, %557 ], [ %335, %551 ]
  %561 = getelementptr inbounds nuw <2 x double>, ptr %503, i64 %555
  store double %560, ptr %561, align 8, !tbaa !43
  %562 = getelementptr inbounds nuw <2 x double>, ptr %506, i64 %555
  store double %560, ptr %562, align 8, !tbaa !43
  %563 = add nuw i64 %546, 2
  %564 = add i64 %547, 2
  %565 = icmp eq i64 %564, %510
  br i1 %565, label %520, label %545, !llvm.loop !176

566:                                              ; preds = %576, %534
  %567 = phi i64 [ 0, %534 ], [ %584, %576 ]
  %568 = icmp eq i64 %541, 0
  br i1 %568, label %572, label %569

569:                                              ; preds = %566
  %570 = getelementptr inbounds nuw <2 x double>, ptr %537, i64 %567
  store double %187, ptr %570, align 8, !tbaa !43
  %571 = getelementptr inbounds nuw <2 x double>, ptr %540, i64 %567
  store double %187, ptr %571, align 8, !tbaa !43
  br label %572

572:                                              ; preds = %569, %566, %498, %532
  %573 = add nuw nsw i64 %160, 1
  %574 = load i64, ptr %27, align 8, !tbaa !20
  %575 = icmp slt i64 %573, %574
  br i1 %575, label %159, label %60, !llvm.loop !177

576:                                              ; preds = %576, %543
  %577 = phi i64 [ 0, %543 ], [ %584, %576 ]
  %578 = phi i64 [ 0, %543 ], [ %585, %576 ]
  %579 = getelementptr inbounds nuw <2 x double>, ptr %537, i64 %577
  store double %187, ptr %579, align 8, !tbaa !43
  %580 = getelementptr inbounds nuw <2 x double>, ptr %540, i64 %577
  store double %187, ptr %580, align 8, !tbaa !43
  %581 = or disjoint i64 %577, 1
  %582 = getelementptr inbounds nuw <2 x double>, ptr %537, i64 %581
  store double %187, ptr %582, align 8, !tbaa !43
  %583 = getelementptr inbounds nuw <2 x double>, ptr %540, i64 %581
  store double %187, ptr %583, align 8, !tbaa !43
  %584 = add nuw nsw i64 %577, 2
  %585 = add i64 %578, 2
  %586 = icmp eq i64 %585, %544
  br i1 %586, label %566, label %576, !llvm.loop !178
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 16 dereferenceable(1600) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !179
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !180
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
  %22 = load ptr, ptr %21, align 8, !tbaa !181
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
  br i1 %68, label %69, label %36, !llvm.loop !182

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
  br i1 %154, label %155, label %117, !llvm.loop !183

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
  br i1 %173, label %174, label %160, !llvm.loop !184

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
  br i1 %263, label %257, label %264, !llvm.loop !185

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
define internal fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr nocapture noundef nonnull align 16 dereferenceable(1600) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(224) %1, i32 noundef range(i32 0, 2) %2, <2 x i64> noundef %3) unnamed_addr #4 {
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
  br i1 %44, label %36, label %45, !llvm.loop !186

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
  br i1 %56, label %57, label %48, !llvm.loop !187

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
  br i1 %113, label %105, label %114, !llvm.loop !186

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
  br i1 %125, label %126, label %117, !llvm.loop !187

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
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 736, !7, i64 960, !7, i64 1184, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1520, !7, i64 1536, !7, i64 1552, !7, i64 1568, !7, i64 1584, !7, i64 1600, !7, i64 1616, !7, i64 1632, !7, i64 1648, !7, i64 1664, !7, i64 1680, !7, i64 1696, !7, i64 1712, !7, i64 1728, !7, i64 1744, !7, i64 1760, !7, i64 1776, !7, i64 1792, !7, i64 1808, !7, i64 1824, !7, i64 1840, !7, i64 1856, !7, i64 1872, !7, i64 1888, !7, i64 1904, !7, i64 1920, !7, i64 1936, !7, i64 1952, !34, i64 1968, !7, i64 2064, !7, i64 2080, !7, i64 2096, !7, i64 2112, !6, i64 2128, !7, i64 2136, !11, i64 2152, !11, i64 2160, !11, i64 2168, !11, i64 2176, !11, i64 2184, !11, i64 2192, !11, i64 2200, !11, i64 2208, !11, i64 2216, !11, i64 2224, !11, i64 2232, !11, i64 2240, !11, i64 2248, !11, i64 2256, !11, i64 2264, !11, i64 2272, !11, i64 2280, !11, i64 2288, !11, i64 2296, !11, i64 2304, !11, i64 2312, !11, i64 2320, !11, i64 2328, !11, i64 2336}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560, !7, i64 576, !7, i64 592, !7, i64 608, !7, i64 624, !7, i64 640, !7, i64 656, !7, i64 672, !7, i64 688, !7, i64 704, !7, i64 720}
!34 = !{!"_ZTS5Flash", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80}
!35 = !{!11, !11, i64 0}
!36 = !{!32, !11, i64 2264}
!37 = distinct !{!37, !38}
!38 = !{!"llvm.loop.mustprogress"}
!39 = !{!17, !11, i64 1584}
!40 = !{!5, !6, i64 0}
!41 = !{!5, !6, i64 184}
!42 = !{!5, !6, i64 192}
!43 = !{!9, !9, i64 0}
!44 = !{!5, !10, i64 216}
!45 = !{!5, !6, i64 40}
!46 = !{!5, !10, i64 200}
!47 = !{!5, !10, i64 208}
!48 = !{!32, !11, i64 2160}
!49 = !{!32, !11, i64 2192}
!50 = !{!32, !11, i64 2248}
!51 = !{!32, !11, i64 2328}
!52 = !{!32, !11, i64 2280}
!53 = distinct !{!53, !38}
!54 = distinct !{!54, !38}
!55 = distinct !{!55, !38}
!56 = distinct !{!56, !38}
!57 = distinct !{!57, !38}
!58 = !{!32, !11, i64 2168}
!59 = !{!32, !11, i64 2152}
!60 = !{!32, !11, i64 2176}
!61 = !{!32, !11, i64 2336}
!62 = distinct !{!62, !38}
!63 = !{!32, !11, i64 2288}
!64 = !{!32, !11, i64 2296}
!65 = distinct !{!65, !38}
!66 = !{!32, !11, i64 2184}
!67 = distinct !{!67, !38}
!68 = !{!69}
!69 = distinct !{!69, !70, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!70 = distinct !{!70, !"_ZL4stirRK5GroupRK5Piece"}
!71 = !{!72}
!72 = distinct !{!72, !73, !"_ZL11water_afterRK5GroupRK5PieceDv2_d: argument 0"}
!73 = distinct !{!73, !"_ZL11water_afterRK5GroupRK5PieceDv2_d"}
!74 = !{!32, !11, i64 2240}
!75 = distinct !{!75, !38}
!76 = distinct !{!76, !38}
!77 = distinct !{!77, !38}
!78 = distinct !{!78, !38}
!79 = !{!80}
!80 = distinct !{!80, !81, !"_ZL4stirRK5GroupRK5Piece: argument 0"}
!81 = distinct !{!81, !"_ZL4stirRK5GroupRK5Piece"}
!82 = !{!32, !11, i64 2216}
!83 = !{!32, !11, i64 2224}
!84 = !{!32, !11, i64 2232}
!85 = !{!32, !11, i64 2200}
!86 = !{!32, !11, i64 2208}
!87 = distinct !{!87, !38}
!88 = distinct !{!88, !38}
!89 = !{!32, !11, i64 2320}
!90 = distinct !{!90, !38}
!91 = !{!32, !11, i64 2304}
!92 = !{!32, !11, i64 2312}
!93 = distinct !{!93, !38}
!94 = distinct !{!94, !38}
!95 = distinct !{!95, !38}
!96 = distinct !{!96, !38}
!97 = !{!98}
!98 = distinct !{!98, !99, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!99 = distinct !{!99, !"_ZL9evaporateR5GroupDv2_d"}
!100 = !{!101, !98}
!101 = distinct !{!101, !102, !"_ZL8flash_ofRK5GroupR5PieceDv2_d: argument 0"}
!102 = distinct !{!102, !"_ZL8flash_ofRK5GroupR5PieceDv2_d"}
!103 = !{!104, !101, !98}
!104 = distinct !{!104, !105, !"_ZL11look_insideRK5GroupRK5PieceDv2_dDv2_x: argument 0"}
!105 = distinct !{!105, !"_ZL11look_insideRK5GroupRK5PieceDv2_dDv2_x"}
!106 = distinct !{!106, !38}
!107 = distinct !{!107, !38}
!108 = !{!109}
!109 = distinct !{!109, !110, !"_ZL7outflowRK5GroupDv2_dS2_: argument 0"}
!110 = distinct !{!110, !"_ZL7outflowRK5GroupDv2_dS2_"}
!111 = !{!112}
!112 = distinct !{!112, !113, !"_ZL8condenseR5GroupDv2_d: argument 0"}
!113 = distinct !{!113, !"_ZL8condenseR5GroupDv2_d"}
!114 = distinct !{!114, !38}
!115 = !{!116}
!116 = distinct !{!116, !117, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!117 = distinct !{!117, !"_ZL9evaporateR5GroupDv2_d"}
!118 = !{!119, !116}
!119 = distinct !{!119, !120, !"_ZL8flash_ofRK5GroupR5PieceDv2_d: argument 0"}
!120 = distinct !{!120, !"_ZL8flash_ofRK5GroupR5PieceDv2_d"}
!121 = !{!122, !119, !116}
!122 = distinct !{!122, !123, !"_ZL11look_insideRK5GroupRK5PieceDv2_dDv2_x: argument 0"}
!123 = distinct !{!123, !"_ZL11look_insideRK5GroupRK5PieceDv2_dDv2_x"}
!124 = distinct !{!124, !38}
!125 = distinct !{!125, !38}
!126 = !{!32, !11, i64 2272}
!127 = distinct !{!127, !38}
!128 = distinct !{!128, !38}
!129 = distinct !{!129, !38}
!130 = !{!131}
!131 = distinct !{!131, !132, !"_ZL11water_afterRK5GroupRK5PieceDv2_d: argument 0"}
!132 = distinct !{!132, !"_ZL11water_afterRK5GroupRK5PieceDv2_d"}
!133 = distinct !{!133, !38}
!134 = distinct !{!134, !38}
!135 = distinct !{!135, !38}
!136 = distinct !{!136, !38}
!137 = distinct !{!137, !138}
!138 = !{!"llvm.loop.unroll.disable"}
!139 = distinct !{!139, !38}
!140 = !{!32, !11, i64 2256}
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
!151 = distinct !{!151, !38}
!152 = distinct !{!152, !38}
!153 = distinct !{!153, !38}
!154 = !{!5, !6, i64 56}
!155 = !{!10, !10, i64 0}
!156 = !{!5, !12, i64 176}
!157 = !{!5, !10, i64 168}
!158 = distinct !{!158, !38}
!159 = distinct !{!159, !138}
!160 = distinct !{!160, !38}
!161 = distinct !{!161, !38}
!162 = distinct !{!162, !138}
!163 = !{!5, !12, i64 160}
!164 = distinct !{!164, !138}
!165 = !{!5, !10, i64 80}
!166 = !{!5, !12, i64 104}
!167 = distinct !{!167, !38}
!168 = !{!5, !10, i64 72}
!169 = !{!5, !10, i64 96}
!170 = distinct !{!170, !38}
!171 = distinct !{!171, !38}
!172 = distinct !{!172, !138}
!173 = distinct !{!173, !38}
!174 = distinct !{!174, !38}
!175 = distinct !{!175, !38}
!176 = distinct !{!176, !38}
!177 = distinct !{!177, !38}
!178 = distinct !{!178, !38}
!179 = !{!5, !10, i64 88}
!180 = !{!5, !12, i64 112}
!181 = !{!5, !12, i64 120}
!182 = distinct !{!182, !38}
!183 = distinct !{!183, !38}
!184 = distinct !{!184, !138}
!185 = distinct !{!185, !38}
!186 = distinct !{!186, !38}
!187 = distinct !{!187, !38}
