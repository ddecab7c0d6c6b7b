; Made by scripts/lanes.py from sources of sha256 69ce26ae16fd7a35379d8efc9e6fb515de9795eacdbd9ef44af629a8ad650b5d.
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
  %42 = getelementptr inbounds nuw i8, ptr %38, i64 1888
  store i64 %41, ptr %42, align 16, !tbaa !31
  %43 = getelementptr inbounds nuw i8, ptr %38, i64 1896
  %44 = getelementptr inbounds nuw i8, ptr %38, i64 1904
  %45 = getelementptr inbounds nuw i8, ptr %38, i64 1912
  %46 = getelementptr inbounds nuw i8, ptr %38, i64 1920
  %47 = getelementptr inbounds nuw i8, ptr %38, i64 1928
  %48 = getelementptr inbounds nuw i8, ptr %38, i64 1936
  %49 = getelementptr inbounds nuw i8, ptr %38, i64 1944
  %50 = getelementptr inbounds nuw i8, ptr %38, i64 1952
  %51 = getelementptr inbounds nuw i8, ptr %38, i64 1960
  %52 = getelementptr inbounds nuw i8, ptr %38, i64 1968
  %53 = getelementptr inbounds nuw i8, ptr %38, i64 1976
  %54 = getelementptr inbounds nuw i8, ptr %38, i64 1984
  %55 = getelementptr inbounds nuw i8, ptr %38, i64 1992
  %56 = getelementptr inbounds nuw i8, ptr %38, i64 2000
  store ptr %35, ptr %43, align 8, !tbaa !34
  %57 = getelementptr inbounds <2 x double>, ptr %35, i64 %13
  store ptr %57, ptr %44, align 8, !tbaa !34
  %58 = getelementptr inbounds <2 x double>, ptr %57, i64 %13
  store ptr %58, ptr %45, align 8, !tbaa !34
  %59 = getelementptr inbounds <2 x double>, ptr %58, i64 %13
  store ptr %59, ptr %46, align 8, !tbaa !34
  %60 = getelementptr inbounds <2 x double>, ptr %59, i64 %13
  store ptr %60, ptr %47, align 8, !tbaa !34
  %61 = getelementptr inbounds <2 x double>, ptr %60, i64 %13
  store ptr %61, ptr %48, align 8, !tbaa !34
  %62 = getelementptr inbounds <2 x double>, ptr %61, i64 %13
  store ptr %62, ptr %49, align 8, !tbaa !34
  %63 = getelementptr inbounds <2 x double>, ptr %62, i64 %13
  store ptr %63, ptr %50, align 8, !tbaa !34
  %64 = getelementptr inbounds <2 x double>, ptr %63, i64 %13
  store ptr %64, ptr %51, align 8, !tbaa !34
  %65 = getelementptr inbounds <2 x double>, ptr %64, i64 %13
  store ptr %65, ptr %52, align 8, !tbaa !34
  %66 = getelementptr inbounds <2 x double>, ptr %65, i64 %13
  store ptr %66, ptr %53, align 8, !tbaa !34
  %67 = getelementptr inbounds <2 x double>, ptr %66, i64 %13
  store ptr %67, ptr %54, align 8, !tbaa !34
  %68 = getelementptr inbounds <2 x double>, ptr %67, i64 %13
  store ptr %68, ptr %55, align 8, !tbaa !34
  %69 = getelementptr inbounds <2 x double>, ptr %68, i64 %13
  store ptr %69, ptr %56, align 8, !tbaa !34
  %70 = getelementptr inbounds <2 x double>, ptr %69, i64 %13
  %71 = getelementptr inbounds nuw i8, ptr %38, i64 2008
  store ptr %70, ptr %71, align 8, !tbaa !35
  %72 = icmp eq i64 %41, 0
  %73 = select i1 %72, i64 0, i64 2
  %74 = shl i64 %33, %73
  %75 = getelementptr inbounds <2 x double>, ptr %70, i64 %74
  %76 = getelementptr inbounds nuw i8, ptr %38, i64 2016
  %77 = getelementptr inbounds nuw i8, ptr %38, i64 2024
  %78 = getelementptr inbounds nuw i8, ptr %38, i64 2032
  %79 = getelementptr inbounds nuw i8, ptr %38, i64 2040
  %80 = getelementptr inbounds nuw i8, ptr %38, i64 2048
  %81 = getelementptr inbounds nuw i8, ptr %38, i64 2056
  %82 = getelementptr inbounds nuw i8, ptr %38, i64 2064
  %83 = getelementptr inbounds nuw i8, ptr %38, i64 2072
  %84 = getelementptr inbounds nuw i8, ptr %38, i64 2080
  store ptr %75, ptr %76, align 8, !tbaa !34
  %85 = getelementptr <2 x double>, ptr %75, i64 %16
  %86 = getelementptr i8, ptr %85, i64 16
  store ptr %86, ptr %77, align 8, !tbaa !34
  %87 = getelementptr <2 x double>, ptr %86, i64 %16
  %88 = getelementptr i8, ptr %87, i64 16
  store ptr %88, ptr %78, align 8, !tbaa !34
  %89 = getelementptr <2 x double>, ptr %88, i64 %16
  %90 = getelementptr i8, ptr %89, i64 16
  store ptr %90, ptr %79, align 8, !tbaa !34
  %91 = getelementptr <2 x double>, ptr %90, i64 %16
  %92 = getelementptr i8, ptr %91, i64 16
  store ptr %92, ptr %80, align 8, !tbaa !34
  %93 = getelementptr <2 x double>, ptr %92, i64 %16
  %94 = getelementptr i8, ptr %93, i64 16
  store ptr %94, ptr %81, align 8, !tbaa !34
  %95 = getelementptr <2 x double>, ptr %94, i64 %16
  %96 = getelementptr i8, ptr %95, i64 16
  store ptr %96, ptr %82, align 8, !tbaa !34
  %97 = getelementptr <2 x double>, ptr %96, i64 %16
  %98 = getelementptr i8, ptr %97, i64 16
  store ptr %98, ptr %83, align 8, !tbaa !34
  %99 = getelementptr <2 x double>, ptr %98, i64 %16
  %100 = getelementptr i8, ptr %99, i64 16
  store ptr %100, ptr %84, align 8, !tbaa !34
  %101 = getelementptr <2 x double>, ptr %100, i64 %16
  %102 = getelementptr i8, ptr %101, i64 16
  %103 = add nuw nsw i64 %36, 1
  %104 = icmp eq i64 %103, %9
  br i1 %104, label %105, label %34, !llvm.loop !36

105:                                              ; preds = %34, %7
  %106 = phi ptr [ %29, %7 ], [ %102, %34 ]
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 1568
  store ptr %106, ptr %107, align 16, !tbaa !38
  %108 = load i64, ptr %0, align 8, !tbaa !39
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
  %116 = load i64, ptr %0, align 8, !tbaa !39
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
  %126 = load i64, ptr %124, align 8, !tbaa !40
  %127 = load i64, ptr %125, align 8, !tbaa !41
  %128 = sub nsw i64 %126, %127
  %129 = icmp slt i64 %128, 4
  br i1 %129, label %5068, label %130

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
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 1328
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 368
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 352
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
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 624
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 608
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
  %274 = load double, ptr %273, align 8, !tbaa !42
  %275 = fcmp oeq double %274, 0.000000e+00
  br i1 %275, label %520, label %276

276:                                              ; preds = %272
  %277 = load i64, ptr %132, align 16, !tbaa !21
  %278 = load i64, ptr %133, align 8, !tbaa !22
  %279 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %267
  %280 = load i64, ptr %279, align 8, !tbaa !30
  %281 = load ptr, ptr %135, align 8, !tbaa !43
  %282 = mul nsw i64 %280, 40
  %283 = getelementptr inbounds i8, ptr %281, i64 %282
  %284 = getelementptr inbounds nuw double, ptr %136, i64 %267
  %285 = load double, ptr %284, align 8, !tbaa !42
  store double %285, ptr %283, align 8, !tbaa !42
  %286 = getelementptr inbounds nuw double, ptr %137, i64 %267
  %287 = load double, ptr %286, align 8, !tbaa !42
  %288 = getelementptr inbounds nuw i8, ptr %283, i64 8
  store double %287, ptr %288, align 8, !tbaa !42
  %289 = getelementptr inbounds nuw double, ptr %138, i64 %267
  %290 = load double, ptr %289, align 8, !tbaa !42
  %291 = getelementptr inbounds nuw i8, ptr %283, i64 16
  store double %290, ptr %291, align 8, !tbaa !42
  %292 = getelementptr inbounds nuw double, ptr %139, i64 %267
  %293 = load double, ptr %292, align 8, !tbaa !42
  %294 = getelementptr inbounds nuw i8, ptr %283, i64 24
  store double %293, ptr %294, align 8, !tbaa !42
  %295 = getelementptr inbounds nuw double, ptr %140, i64 %267
  %296 = load double, ptr %295, align 8, !tbaa !42
  %297 = getelementptr inbounds nuw i8, ptr %283, i64 32
  store double %296, ptr %297, align 8, !tbaa !42
  %298 = load i64, ptr %141, align 16, !tbaa !16
  %299 = icmp sgt i64 %298, 0
  br i1 %299, label %300, label %504

300:                                              ; preds = %276
  %301 = load ptr, ptr %142, align 8, !tbaa !28
  %302 = load ptr, ptr %143, align 8, !tbaa !44
  %303 = mul nsw i64 %298, %280
  %304 = mul i64 %277, 3
  %305 = load ptr, ptr %144, align 8, !tbaa !45
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
  %320 = load double, ptr %319, align 8, !tbaa !42
  %321 = getelementptr inbounds nuw i8, ptr %317, i64 1088
  %322 = getelementptr inbounds nuw double, ptr %321, i64 %267
  %323 = load double, ptr %322, align 8, !tbaa !42
  %324 = add nsw i64 %316, %303
  %325 = mul i64 %304, %324
  %326 = getelementptr inbounds double, ptr %302, i64 %325
  %327 = mul nsw i64 %324, 40
  %328 = getelementptr inbounds i8, ptr %305, i64 %327
  br i1 %306, label %329, label %346

329:                                              ; preds = %315
  %330 = getelementptr inbounds nuw i8, ptr %317, i64 1904
  %331 = load ptr, ptr %330, align 16, !tbaa !46
  %332 = getelementptr inbounds nuw i8, ptr %317, i64 1936
  %333 = load ptr, ptr %332, align 16, !tbaa !47
  %334 = getelementptr inbounds nuw double, ptr %333, i64 %267
  %335 = getelementptr double, ptr %326, i64 %277
  %336 = getelementptr inbounds nuw i8, ptr %317, i64 1104
  %337 = getelementptr inbounds nuw i8, ptr %317, i64 1992
  %338 = load ptr, ptr %337, align 8, !tbaa !48
  %339 = getelementptr inbounds nuw i8, ptr %317, i64 1888
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
  %349 = getelementptr inbounds nuw i8, ptr %317, i64 2072
  %350 = load ptr, ptr %349, align 8, !tbaa !49
  %351 = getelementptr inbounds nuw double, ptr %350, i64 %267
  %352 = getelementptr inbounds nuw i8, ptr %317, i64 192
  %353 = getelementptr inbounds nuw double, ptr %352, i64 %267
  %354 = load double, ptr %353, align 8, !tbaa !42
  %355 = getelementptr inbounds nuw i8, ptr %317, i64 2024
  %356 = load ptr, ptr %355, align 8, !tbaa !50
  %357 = getelementptr inbounds nuw double, ptr %356, i64 %267
  %358 = load double, ptr %351, align 8, !tbaa !42
  br i1 %312, label %398, label %481

359:                                              ; preds = %388, %329
  %360 = phi double [ %323, %329 ], [ %395, %388 ]
  %361 = phi i64 [ 0, %329 ], [ %396, %388 ]
  %362 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 %361
  %363 = getelementptr inbounds nuw double, ptr %362, i64 %267
  %364 = load double, ptr %363, align 8, !tbaa !42
  %365 = getelementptr inbounds nuw double, ptr %326, i64 %361
  store double %364, ptr %365, align 8, !tbaa !42
  %366 = getelementptr inbounds nuw <2 x double>, ptr %334, i64 %361
  %367 = load double, ptr %366, align 8, !tbaa !42
  %368 = getelementptr double, ptr %335, i64 %361
  store double %367, ptr %368, align 8, !tbaa !42
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
  %392 = load double, ptr %307, align 8, !tbaa !42
  %393 = getelementptr double, ptr %345, i64 %361
  store double %392, ptr %393, align 8, !tbaa !42
  %394 = load double, ptr %309, align 8, !tbaa !42
  %395 = fadd double %360, %394
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #8
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  %396 = add nuw nsw i64 %361, 1
  %397 = icmp eq i64 %396, %277
  br i1 %397, label %346, label %359, !llvm.loop !51

398:                                              ; preds = %481, %348
  %399 = phi double [ poison, %348 ], [ %501, %481 ]
  %400 = phi double [ %358, %348 ], [ %496, %481 ]
  %401 = phi double [ %347, %348 ], [ %501, %481 ]
  %402 = phi i64 [ 0, %348 ], [ %494, %481 ]
  br i1 %314, label %412, label %403

403:                                              ; preds = %398
  %404 = getelementptr <2 x double>, ptr %351, i64 %402
  %405 = getelementptr i8, ptr %404, i64 16
  %406 = load double, ptr %405, align 8, !tbaa !42
  %407 = fsub double %406, %400
  %408 = fmul double %354, %407
  %409 = getelementptr inbounds nuw <2 x double>, ptr %357, i64 %402
  %410 = load double, ptr %409, align 8, !tbaa !42
  %411 = tail call double @llvm.fmuladd.f64(double %408, double %410, double %401)
  br label %412

412:                                              ; preds = %403, %398, %346
  %413 = phi double [ %347, %346 ], [ %399, %398 ], [ %411, %403 ]
  %414 = getelementptr inbounds nuw i8, ptr %317, i64 240
  %415 = getelementptr inbounds nuw double, ptr %414, i64 %267
  %416 = load double, ptr %415, align 8, !tbaa !42
  %417 = getelementptr inbounds nuw i8, ptr %317, i64 96
  %418 = getelementptr inbounds nuw double, ptr %417, i64 %267
  %419 = load double, ptr %418, align 8, !tbaa !42
  %420 = getelementptr inbounds nuw i8, ptr %317, i64 112
  %421 = getelementptr inbounds nuw double, ptr %420, i64 %267
  %422 = load double, ptr %421, align 8, !tbaa !42
  %423 = getelementptr inbounds nuw i8, ptr %317, i64 128
  %424 = getelementptr inbounds nuw double, ptr %423, i64 %267
  %425 = load double, ptr %424, align 8, !tbaa !42
  %426 = fmul double %416, %425
  %427 = fdiv double %426, 3.000000e+00
  %428 = tail call double @llvm.fmuladd.f64(double %422, double 5.000000e-01, double %427)
  %429 = tail call double @llvm.fmuladd.f64(double %416, double %428, double %419)
  %430 = fmul double %416, %429
  %431 = getelementptr inbounds nuw i8, ptr %317, i64 352
  %432 = getelementptr inbounds nuw double, ptr %431, i64 %267
  %433 = load double, ptr %432, align 8, !tbaa !42
  %434 = fsub double %433, %320
  %435 = getelementptr inbounds nuw i8, ptr %317, i64 160
  %436 = getelementptr inbounds nuw double, ptr %435, i64 %267
  %437 = load double, ptr %436, align 8, !tbaa !42
  %438 = fmul double %320, %437
  %439 = fmul double %416, %438
  %440 = tail call double @llvm.fmuladd.f64(double %434, double %430, double %439)
  %441 = getelementptr inbounds nuw i8, ptr %317, i64 1024
  %442 = getelementptr inbounds nuw double, ptr %441, i64 %267
  %443 = load double, ptr %442, align 8, !tbaa !42
  %444 = getelementptr inbounds nuw i8, ptr %317, i64 1040
  %445 = getelementptr inbounds nuw double, ptr %444, i64 %267
  %446 = load double, ptr %445, align 8, !tbaa !42
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
  store double %462, ptr %328, align 8, !tbaa !42
  %463 = getelementptr inbounds nuw i8, ptr %317, i64 1008
  %464 = getelementptr inbounds nuw double, ptr %463, i64 %267
  %465 = load double, ptr %464, align 8, !tbaa !42
  %466 = getelementptr inbounds nuw i8, ptr %328, i64 8
  store double %465, ptr %466, align 8, !tbaa !42
  %467 = getelementptr inbounds nuw i8, ptr %317, i64 960
  %468 = getelementptr inbounds nuw double, ptr %467, i64 %267
  %469 = load double, ptr %468, align 8, !tbaa !42
  %470 = getelementptr inbounds nuw i8, ptr %328, i64 16
  store double %469, ptr %470, align 8, !tbaa !42
  %471 = getelementptr inbounds nuw i8, ptr %317, i64 976
  %472 = getelementptr inbounds nuw double, ptr %471, i64 %267
  %473 = load double, ptr %472, align 8, !tbaa !42
  %474 = getelementptr inbounds nuw i8, ptr %328, i64 24
  store double %473, ptr %474, align 8, !tbaa !42
  %475 = getelementptr inbounds nuw i8, ptr %317, i64 944
  %476 = getelementptr inbounds nuw double, ptr %475, i64 %267
  %477 = load double, ptr %476, align 8, !tbaa !42
  %478 = getelementptr inbounds nuw i8, ptr %328, i64 32
  store double %477, ptr %478, align 8, !tbaa !42
  %479 = add nuw nsw i64 %316, 1
  %480 = icmp eq i64 %479, %298
  br i1 %480, label %504, label %315, !llvm.loop !52

481:                                              ; preds = %348, %481
  %482 = phi double [ %496, %481 ], [ %358, %348 ]
  %483 = phi double [ %501, %481 ], [ %347, %348 ]
  %484 = phi i64 [ %494, %481 ], [ 0, %348 ]
  %485 = phi i64 [ %502, %481 ], [ 0, %348 ]
  %486 = or disjoint i64 %484, 1
  %487 = getelementptr inbounds nuw <2 x double>, ptr %351, i64 %486
  %488 = load double, ptr %487, align 8, !tbaa !42
  %489 = fsub double %488, %482
  %490 = fmul double %354, %489
  %491 = getelementptr inbounds nuw <2 x double>, ptr %357, i64 %484
  %492 = load double, ptr %491, align 8, !tbaa !42
  %493 = tail call double @llvm.fmuladd.f64(double %490, double %492, double %483)
  %494 = add nuw nsw i64 %484, 2
  %495 = getelementptr inbounds nuw <2 x double>, ptr %351, i64 %494
  %496 = load double, ptr %495, align 8, !tbaa !42
  %497 = fsub double %496, %488
  %498 = fmul double %354, %497
  %499 = getelementptr inbounds nuw <2 x double>, ptr %357, i64 %486
  %500 = load double, ptr %499, align 8, !tbaa !42
  %501 = tail call double @llvm.fmuladd.f64(double %498, double %500, double %493)
  %502 = add i64 %485, 2
  %503 = icmp eq i64 %502, %313
  br i1 %503, label %398, label %481, !llvm.loop !53

504:                                              ; preds = %412, %276
  %505 = load i64, ptr %145, align 8, !tbaa !27
  %506 = load i64, ptr %0, align 8, !tbaa !39
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
  %515 = load double, ptr %273, align 8, !tbaa !42
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
  br label %265, !llvm.loop !54

526:                                              ; preds = %520
  br i1 %521, label %532, label %527

527:                                              ; preds = %5049, %5067, %5064, %3299, %3597, %526
  %528 = load i64, ptr %124, align 8, !tbaa !40
  %529 = load i64, ptr %125, align 8, !tbaa !41
  %530 = sub nsw i64 %528, %529
  %531 = icmp slt i64 %530, 4
  br i1 %531, label %5068, label %522

532:                                              ; preds = %526
  %533 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %534 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %533)
  %535 = icmp eq i64 %534, 0
  br i1 %535, label %5068, label %536

536:                                              ; preds = %532
  %537 = load <2 x i64>, ptr %146, align 16, !tbaa !26
  %538 = and <2 x i64> %537, %533
  %539 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %538)
  %540 = icmp eq i64 %539, 0
  %541 = load i64, ptr %169, align 8, !tbaa !20
  br i1 %540, label %1166, label %542

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
  br i1 %606, label %607, label %654

607:                                              ; preds = %542
  %608 = load ptr, ptr %142, align 8, !tbaa !28
  br label %609

609:                                              ; preds = %607, %609
  %610 = phi <2 x double> [ %605, %607 ], [ %651, %609 ]
  %611 = phi i64 [ 0, %607 ], [ %652, %609 ]
  %612 = getelementptr inbounds nuw %struct.Piece, ptr %608, i64 %611
  %613 = getelementptr inbounds nuw i8, ptr %612, i64 944
  %614 = load <2 x double>, ptr %613, align 16, !tbaa !26
  %615 = getelementptr inbounds nuw i8, ptr %612, i64 368
  %616 = load <2 x double>, ptr %615, align 16, !tbaa !26
  %617 = fsub <2 x double> %614, %616
  %618 = getelementptr inbounds nuw i8, ptr %612, i64 208
  %619 = load <2 x double>, ptr %618, align 16, !tbaa !26
  %620 = fmul <2 x double> %617, %619
  %621 = getelementptr inbounds nuw i8, ptr %612, i64 400
  %622 = load <2 x double>, ptr %621, align 16, !tbaa !26
  %623 = getelementptr inbounds nuw i8, ptr %612, i64 1008
  %624 = load <2 x double>, ptr %623, align 16, !tbaa !26
  %625 = fsub <2 x double> %622, %624
  %626 = getelementptr inbounds nuw i8, ptr %612, i64 1840
  %627 = load <2 x i64>, ptr %626, align 16, !tbaa !26
  %628 = getelementptr inbounds nuw i8, ptr %612, i64 1824
  %629 = load <2 x double>, ptr %628, align 16, !tbaa !26
  %630 = fcmp une <2 x double> %629, splat (double 1.000000e+00)
  %631 = select <2 x i1> %630, <2 x double> %620, <2 x double> %625
  %632 = getelementptr inbounds nuw i8, ptr %612, i64 960
  %633 = load <2 x double>, ptr %632, align 16, !tbaa !26
  %634 = icmp eq <2 x i64> %627, zeroinitializer
  %635 = select <2 x i1> %634, <2 x double> %633, <2 x double> %631
  %636 = getelementptr inbounds nuw i8, ptr %612, i64 1408
  %637 = load <2 x double>, ptr %636, align 16, !tbaa !26
  %638 = getelementptr inbounds nuw i8, ptr %612, i64 1792
  %639 = load <2 x double>, ptr %638, align 16, !tbaa !26
  %640 = fdiv <2 x double> %639, %582
  %641 = select <2 x i1> %634, <2 x double> %640, <2 x double> zeroinitializer
  %642 = fsub <2 x double> %637, %641
  %643 = fcmp ule <2 x double> %635, zeroinitializer
  %644 = fcmp ule <2 x double> %642, zeroinitializer
  %645 = or <2 x i1> %643, %644
  %646 = fdiv <2 x double> %635, %642
  %647 = fcmp ogt <2 x double> %646, splat (double 1.000000e-03)
  %648 = select <2 x i1> %647, <2 x double> %646, <2 x double> splat (double 1.000000e-03)
  %649 = select <2 x i1> %645, <2 x double> splat (double 1.000000e+09), <2 x double> %648
  %650 = fcmp olt <2 x double> %610, %649
  %651 = select <2 x i1> %650, <2 x double> %610, <2 x double> %649
  %652 = add nuw nsw i64 %611, 1
  %653 = icmp eq i64 %652, %541
  br i1 %653, label %654, label %609, !llvm.loop !55

654:                                              ; preds = %609, %542
  %655 = phi <2 x double> [ %605, %542 ], [ %651, %609 ]
  %656 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %657 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %658 = fadd <2 x double> %656, %657
  %659 = fsub <2 x double> %658, %545
  %660 = fmul <2 x double> %655, splat (double 1.050000e+00)
  %661 = fcmp ugt <2 x double> %659, %660
  %662 = select <2 x i1> %661, <2 x double> %655, <2 x double> %659
  %663 = fmul <2 x double> %558, splat (double 0x3FF000010C6F7A0B)
  %664 = fcmp ole <2 x double> %662, %663
  %665 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %666 = fcmp ogt <2 x double> %665, %558
  %667 = select <2 x i1> %666, <2 x double> %665, <2 x double> %558
  %668 = icmp ne <2 x i64> %538, zeroinitializer
  %669 = select <2 x i1> %664, <2 x i1> %668, <2 x i1> zeroinitializer
  %670 = select <2 x i1> %669, <2 x double> %667, <2 x double> %665
  store <2 x double> %670, ptr %172, align 16, !tbaa !26
  %671 = fmul <2 x double> %558, splat (double 2.000000e+00)
  %672 = fcmp uge <2 x double> %662, %671
  %673 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %674 = fcmp une <2 x double> %673, zeroinitializer
  %675 = or <2 x i1> %674, %672
  %676 = fmul <2 x double> %662, splat (double 5.000000e-01)
  %677 = select <2 x i1> %675, <2 x double> %558, <2 x double> %676
  %678 = select <2 x i1> %664, <2 x double> %662, <2 x double> %677
  %679 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %680 = icmp eq <2 x i64> %538, zeroinitializer
  %681 = select <2 x i1> %680, <2 x double> %679, <2 x double> %678
  store <2 x double> %681, ptr %173, align 16, !tbaa !26
  %682 = fdiv <2 x double> %681, %582
  %683 = fdiv <2 x double> splat (double 1.000000e+00), %681
  %684 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %682, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %685 = fadd <2 x double> %682, splat (double 1.000000e+00)
  %686 = fdiv <2 x double> %684, %685
  %687 = fmul <2 x double> %683, %686
  %688 = icmp eq <2 x i64> %587, zeroinitializer
  %689 = select <2 x i1> %688, <2 x double> %687, <2 x double> %683
  %690 = fneg <2 x double> %683
  %691 = fneg <2 x double> %685
  %692 = fmul <2 x double> %683, %691
  %693 = select <2 x i1> %688, <2 x double> %692, <2 x double> %690
  %694 = fmul <2 x double> %682, %682
  %695 = fdiv <2 x double> %694, %685
  %696 = fmul <2 x double> %683, %695
  %697 = select <2 x i1> %688, <2 x double> %696, <2 x double> zeroinitializer
  %698 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %699 = select <2 x i1> %680, <2 x double> %698, <2 x double> %689
  store <2 x double> %699, ptr %175, align 16, !tbaa !26
  %700 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %701 = select <2 x i1> %680, <2 x double> %700, <2 x double> %693
  store <2 x double> %701, ptr %176, align 16, !tbaa !26
  %702 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %703 = select <2 x i1> %680, <2 x double> %702, <2 x double> %697
  store <2 x double> %703, ptr %177, align 16, !tbaa !26
  %704 = select <2 x i1> %688, <2 x double> %682, <2 x double> zeroinitializer
  %705 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %704, <2 x double> %581, <2 x double> %567)
  %706 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %707 = select <2 x i1> %680, <2 x double> %706, <2 x double> %705
  %708 = load <2 x double>, ptr %236, align 16, !tbaa !26
  %709 = load <2 x double>, ptr %237, align 16, !tbaa !26
  %710 = fsub <2 x double> %708, %709
  %711 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %704, <2 x double> %710, <2 x double> %708)
  %712 = load <2 x double>, ptr %235, align 16, !tbaa !26
  %713 = select <2 x i1> %680, <2 x double> %712, <2 x double> %711
  store <2 x double> %713, ptr %235, align 16, !tbaa !26
  %714 = load <2 x double>, ptr %239, align 16, !tbaa !26
  %715 = load <2 x double>, ptr %240, align 16, !tbaa !26
  %716 = fsub <2 x double> %714, %715
  %717 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %704, <2 x double> %716, <2 x double> %714)
  %718 = load <2 x double>, ptr %238, align 16, !tbaa !26
  %719 = select <2 x i1> %680, <2 x double> %718, <2 x double> %717
  store <2 x double> %719, ptr %238, align 16, !tbaa !26
  %720 = load <2 x double>, ptr %242, align 16, !tbaa !26
  %721 = load <2 x double>, ptr %243, align 16, !tbaa !26
  %722 = fsub <2 x double> %720, %721
  %723 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %704, <2 x double> %722, <2 x double> %720)
  %724 = load <2 x double>, ptr %241, align 16, !tbaa !26
  %725 = select <2 x i1> %680, <2 x double> %724, <2 x double> %723
  store <2 x double> %725, ptr %241, align 16, !tbaa !26
  %726 = load <2 x double>, ptr %245, align 16, !tbaa !26
  %727 = load <2 x double>, ptr %246, align 16, !tbaa !26
  %728 = fsub <2 x double> %726, %727
  %729 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %704, <2 x double> %728, <2 x double> %726)
  %730 = load <2 x double>, ptr %244, align 16, !tbaa !26
  %731 = select <2 x i1> %680, <2 x double> %730, <2 x double> %729
  store <2 x double> %731, ptr %244, align 16, !tbaa !26
  %732 = load <2 x double>, ptr %248, align 16, !tbaa !26
  %733 = load <2 x double>, ptr %249, align 16, !tbaa !26
  %734 = fsub <2 x double> %732, %733
  %735 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %704, <2 x double> %734, <2 x double> %732)
  %736 = load <2 x double>, ptr %247, align 16, !tbaa !26
  %737 = select <2 x i1> %680, <2 x double> %736, <2 x double> %735
  store <2 x double> %737, ptr %247, align 16, !tbaa !26
  %738 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %739 = icmp eq <2 x i64> %738, zeroinitializer
  %740 = select <2 x i1> %739, <2 x double> zeroinitializer, <2 x double> %569
  %741 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %742 = fsub <2 x double> %740, %741
  %743 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %744 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %575, <2 x double> %743, <2 x double> %574)
  %745 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %573, <2 x double> %744, <2 x double> %577)
  %746 = fdiv <2 x double> %742, %745
  %747 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %748 = load <2 x i64>, ptr %165, align 16, !tbaa !26
  %749 = or <2 x i64> %748, %747
  %750 = and <2 x i64> %749, %538
  %751 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %681, <2 x double> %746, <2 x double> %743)
  %752 = icmp eq <2 x i64> %750, zeroinitializer
  %753 = select <2 x i1> %599, <2 x i1> splat (i1 true), <2 x i1> %752
  %754 = select <2 x i1> %753, <2 x double> %707, <2 x double> %751
  store <2 x double> %754, ptr %178, align 16, !tbaa !26
  %755 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %756 = select <2 x i1> %680, <2 x double> %755, <2 x double> %742
  store <2 x double> %756, ptr %179, align 16, !tbaa !26
  %757 = xor <2 x i64> %748, splat (i64 -1)
  %758 = and <2 x i64> %747, %757
  store <2 x i64> %758, ptr %166, align 16, !tbaa !26
  %759 = load i64, ptr %169, align 8, !tbaa !20
  %760 = icmp sgt i64 %759, 0
  br i1 %760, label %761, label %1153

761:                                              ; preds = %654, %1149
  %762 = phi i64 [ %1150, %1149 ], [ 0, %654 ]
  %763 = load ptr, ptr %142, align 8, !tbaa !28
  %764 = getelementptr inbounds nuw %struct.Piece, ptr %763, i64 %762
  %765 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %766 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %767 = getelementptr inbounds nuw i8, ptr %764, i64 1856
  %768 = load <2 x i64>, ptr %767, align 16, !tbaa !26
  %769 = fdiv <2 x double> %765, %766
  %770 = fdiv <2 x double> splat (double 1.000000e+00), %765
  %771 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %769, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %772 = fadd <2 x double> %769, splat (double 1.000000e+00)
  %773 = fdiv <2 x double> %771, %772
  %774 = fmul <2 x double> %770, %773
  %775 = icmp eq <2 x i64> %768, zeroinitializer
  %776 = select <2 x i1> %775, <2 x double> %774, <2 x double> %770
  %777 = fneg <2 x double> %770
  %778 = fneg <2 x double> %772
  %779 = fmul <2 x double> %770, %778
  %780 = select <2 x i1> %775, <2 x double> %779, <2 x double> %777
  %781 = fmul <2 x double> %769, %769
  %782 = fdiv <2 x double> %781, %772
  %783 = fmul <2 x double> %770, %782
  %784 = select <2 x i1> %775, <2 x double> %783, <2 x double> zeroinitializer
  %785 = getelementptr inbounds nuw i8, ptr %764, i64 1312
  %786 = load <2 x double>, ptr %785, align 16, !tbaa !26
  %787 = select <2 x i1> %680, <2 x double> %786, <2 x double> %776
  store <2 x double> %787, ptr %785, align 16, !tbaa !26
  %788 = getelementptr inbounds nuw i8, ptr %764, i64 1328
  %789 = load <2 x double>, ptr %788, align 16, !tbaa !26
  %790 = select <2 x i1> %680, <2 x double> %789, <2 x double> %780
  store <2 x double> %790, ptr %788, align 16, !tbaa !26
  %791 = getelementptr inbounds nuw i8, ptr %764, i64 1344
  %792 = load <2 x double>, ptr %791, align 16, !tbaa !26
  %793 = select <2 x i1> %680, <2 x double> %792, <2 x double> %784
  store <2 x double> %793, ptr %791, align 16, !tbaa !26
  %794 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %795 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %796 = fdiv <2 x double> %794, %795
  %797 = select <2 x i1> %775, <2 x double> %796, <2 x double> zeroinitializer
  %798 = getelementptr inbounds nuw i8, ptr %764, i64 736
  %799 = getelementptr inbounds nuw i8, ptr %764, i64 928
  %800 = getelementptr inbounds nuw i8, ptr %764, i64 1120
  %801 = load <2 x double>, ptr %799, align 16, !tbaa !26
  %802 = load <2 x double>, ptr %800, align 16, !tbaa !26
  %803 = fsub <2 x double> %801, %802
  %804 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %803, <2 x double> %801)
  %805 = load <2 x double>, ptr %798, align 16, !tbaa !26
  %806 = select <2 x i1> %680, <2 x double> %805, <2 x double> %804
  store <2 x double> %806, ptr %798, align 16, !tbaa !26
  %807 = getelementptr inbounds nuw i8, ptr %764, i64 752
  %808 = getelementptr inbounds nuw i8, ptr %764, i64 944
  %809 = load <2 x double>, ptr %808, align 16, !tbaa !26
  %810 = getelementptr inbounds nuw i8, ptr %764, i64 1136
  %811 = load <2 x double>, ptr %810, align 16, !tbaa !26
  %812 = fsub <2 x double> %809, %811
  %813 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %812, <2 x double> %809)
  %814 = load <2 x double>, ptr %807, align 16, !tbaa !26
  %815 = select <2 x i1> %680, <2 x double> %814, <2 x double> %813
  store <2 x double> %815, ptr %807, align 16, !tbaa !26
  %816 = getelementptr inbounds nuw i8, ptr %764, i64 768
  %817 = getelementptr inbounds nuw i8, ptr %764, i64 960
  %818 = load <2 x double>, ptr %817, align 16, !tbaa !26
  %819 = getelementptr inbounds nuw i8, ptr %764, i64 1152
  %820 = load <2 x double>, ptr %819, align 16, !tbaa !26
  %821 = fsub <2 x double> %818, %820
  %822 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %821, <2 x double> %818)
  %823 = load <2 x double>, ptr %816, align 16, !tbaa !26
  %824 = select <2 x i1> %680, <2 x double> %823, <2 x double> %822
  store <2 x double> %824, ptr %816, align 16, !tbaa !26
  %825 = getelementptr inbounds nuw i8, ptr %764, i64 784
  %826 = getelementptr inbounds nuw i8, ptr %764, i64 976
  %827 = load <2 x double>, ptr %826, align 16, !tbaa !26
  %828 = getelementptr inbounds nuw i8, ptr %764, i64 1168
  %829 = load <2 x double>, ptr %828, align 16, !tbaa !26
  %830 = fsub <2 x double> %827, %829
  %831 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %830, <2 x double> %827)
  %832 = load <2 x double>, ptr %825, align 16, !tbaa !26
  %833 = select <2 x i1> %680, <2 x double> %832, <2 x double> %831
  store <2 x double> %833, ptr %825, align 16, !tbaa !26
  %834 = getelementptr inbounds nuw i8, ptr %764, i64 800
  %835 = getelementptr inbounds nuw i8, ptr %764, i64 992
  %836 = load <2 x double>, ptr %835, align 16, !tbaa !26
  %837 = getelementptr inbounds nuw i8, ptr %764, i64 1184
  %838 = load <2 x double>, ptr %837, align 16, !tbaa !26
  %839 = fsub <2 x double> %836, %838
  %840 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %839, <2 x double> %836)
  %841 = load <2 x double>, ptr %834, align 16, !tbaa !26
  %842 = select <2 x i1> %680, <2 x double> %841, <2 x double> %840
  store <2 x double> %842, ptr %834, align 16, !tbaa !26
  %843 = getelementptr inbounds nuw i8, ptr %764, i64 816
  %844 = getelementptr inbounds nuw i8, ptr %764, i64 1008
  %845 = load <2 x double>, ptr %844, align 16, !tbaa !26
  %846 = getelementptr inbounds nuw i8, ptr %764, i64 1200
  %847 = load <2 x double>, ptr %846, align 16, !tbaa !26
  %848 = fsub <2 x double> %845, %847
  %849 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %848, <2 x double> %845)
  %850 = load <2 x double>, ptr %843, align 16, !tbaa !26
  %851 = select <2 x i1> %680, <2 x double> %850, <2 x double> %849
  store <2 x double> %851, ptr %843, align 16, !tbaa !26
  %852 = getelementptr inbounds nuw i8, ptr %764, i64 832
  %853 = getelementptr inbounds nuw i8, ptr %764, i64 1024
  %854 = load <2 x double>, ptr %853, align 16, !tbaa !26
  %855 = getelementptr inbounds nuw i8, ptr %764, i64 1216
  %856 = load <2 x double>, ptr %855, align 16, !tbaa !26
  %857 = fsub <2 x double> %854, %856
  %858 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %857, <2 x double> %854)
  %859 = load <2 x double>, ptr %852, align 16, !tbaa !26
  %860 = select <2 x i1> %680, <2 x double> %859, <2 x double> %858
  store <2 x double> %860, ptr %852, align 16, !tbaa !26
  %861 = getelementptr inbounds nuw i8, ptr %764, i64 848
  %862 = getelementptr inbounds nuw i8, ptr %764, i64 1040
  %863 = load <2 x double>, ptr %862, align 16, !tbaa !26
  %864 = getelementptr inbounds nuw i8, ptr %764, i64 1232
  %865 = load <2 x double>, ptr %864, align 16, !tbaa !26
  %866 = fsub <2 x double> %863, %865
  %867 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %866, <2 x double> %863)
  %868 = load <2 x double>, ptr %861, align 16, !tbaa !26
  %869 = select <2 x i1> %680, <2 x double> %868, <2 x double> %867
  store <2 x double> %869, ptr %861, align 16, !tbaa !26
  %870 = getelementptr inbounds nuw i8, ptr %764, i64 864
  %871 = getelementptr inbounds nuw i8, ptr %764, i64 1056
  %872 = load <2 x double>, ptr %871, align 16, !tbaa !26
  %873 = getelementptr inbounds nuw i8, ptr %764, i64 1248
  %874 = load <2 x double>, ptr %873, align 16, !tbaa !26
  %875 = fsub <2 x double> %872, %874
  %876 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %875, <2 x double> %872)
  %877 = load <2 x double>, ptr %870, align 16, !tbaa !26
  %878 = select <2 x i1> %680, <2 x double> %877, <2 x double> %876
  store <2 x double> %878, ptr %870, align 16, !tbaa !26
  %879 = getelementptr inbounds nuw i8, ptr %764, i64 880
  %880 = getelementptr inbounds nuw i8, ptr %764, i64 1072
  %881 = load <2 x double>, ptr %880, align 16, !tbaa !26
  %882 = getelementptr inbounds nuw i8, ptr %764, i64 1264
  %883 = load <2 x double>, ptr %882, align 16, !tbaa !26
  %884 = fsub <2 x double> %881, %883
  %885 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %884, <2 x double> %881)
  %886 = load <2 x double>, ptr %879, align 16, !tbaa !26
  %887 = select <2 x i1> %680, <2 x double> %886, <2 x double> %885
  store <2 x double> %887, ptr %879, align 16, !tbaa !26
  %888 = getelementptr inbounds nuw i8, ptr %764, i64 896
  %889 = getelementptr inbounds nuw i8, ptr %764, i64 1088
  %890 = load <2 x double>, ptr %889, align 16, !tbaa !26
  %891 = getelementptr inbounds nuw i8, ptr %764, i64 1280
  %892 = load <2 x double>, ptr %891, align 16, !tbaa !26
  %893 = fsub <2 x double> %890, %892
  %894 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %893, <2 x double> %890)
  %895 = load <2 x double>, ptr %888, align 16, !tbaa !26
  %896 = select <2 x i1> %680, <2 x double> %895, <2 x double> %894
  store <2 x double> %896, ptr %888, align 16, !tbaa !26
  %897 = load <2 x double>, ptr %798, align 16, !tbaa !26
  %898 = load <2 x double>, ptr %799, align 16, !tbaa !26
  %899 = fcmp olt <2 x double> %897, %898
  %900 = select <2 x i1> %899, <2 x double> %897, <2 x double> %898
  %901 = load <2 x double>, ptr %764, align 16, !tbaa !26
  %902 = fmul <2 x double> %901, splat (double 3.000000e-01)
  %903 = fcmp ogt <2 x double> %900, %902
  %904 = select <2 x i1> %903, <2 x double> %900, <2 x double> %902
  %905 = select <2 x i1> %680, <2 x double> %897, <2 x double> %904
  store <2 x double> %905, ptr %798, align 16, !tbaa !26
  %906 = getelementptr inbounds nuw i8, ptr %764, i64 1408
  %907 = fcmp ogt <2 x double> %878, zeroinitializer
  %908 = select <2 x i1> %907, <2 x double> %878, <2 x double> zeroinitializer
  %909 = load <2 x double>, ptr %906, align 16, !tbaa !26
  %910 = select <2 x i1> %680, <2 x double> %909, <2 x double> %908
  store <2 x double> %910, ptr %906, align 16, !tbaa !26
  %911 = getelementptr inbounds nuw i8, ptr %764, i64 96
  %912 = load <2 x double>, ptr %911, align 16, !tbaa !26
  %913 = getelementptr inbounds nuw i8, ptr %764, i64 112
  %914 = load <2 x double>, ptr %913, align 16, !tbaa !26
  %915 = getelementptr inbounds nuw i8, ptr %764, i64 128
  %916 = load <2 x double>, ptr %915, align 16, !tbaa !26
  %917 = getelementptr inbounds nuw i8, ptr %764, i64 160
  %918 = load <2 x double>, ptr %917, align 16, !tbaa !26
  %919 = getelementptr inbounds nuw i8, ptr %764, i64 192
  %920 = load <2 x double>, ptr %919, align 16, !tbaa !26
  %921 = getelementptr inbounds nuw i8, ptr %764, i64 208
  %922 = getelementptr inbounds nuw i8, ptr %764, i64 384
  %923 = load <2 x double>, ptr %922, align 16, !tbaa !26
  %924 = getelementptr inbounds nuw i8, ptr %764, i64 1104
  %925 = load <2 x double>, ptr %924, align 16, !tbaa !26
  %926 = fsub <2 x double> %925, %923
  %927 = getelementptr inbounds nuw i8, ptr %764, i64 1296
  %928 = load <2 x double>, ptr %927, align 16, !tbaa !26
  %929 = fsub <2 x double> %928, %923
  %930 = load <2 x double>, ptr %788, align 16, !tbaa !26
  %931 = load <2 x double>, ptr %791, align 16, !tbaa !26
  %932 = fmul <2 x double> %926, %930
  %933 = fmul <2 x double> %929, %931
  %934 = fmul <2 x double> %923, %930
  %935 = fmul <2 x double> %918, %934
  %936 = fmul <2 x double> %923, %931
  %937 = fmul <2 x double> %918, %936
  %938 = getelementptr inbounds nuw i8, ptr %764, i64 1904
  %939 = load ptr, ptr %938, align 16, !tbaa !46
  %940 = getelementptr inbounds nuw i8, ptr %764, i64 1912
  %941 = load ptr, ptr %940, align 8, !tbaa !56
  %942 = getelementptr inbounds nuw i8, ptr %764, i64 1992
  %943 = load ptr, ptr %942, align 8, !tbaa !48
  %944 = getelementptr inbounds nuw i8, ptr %764, i64 1896
  %945 = load ptr, ptr %944, align 8, !tbaa !57
  %946 = getelementptr inbounds nuw i8, ptr %764, i64 1920
  %947 = load ptr, ptr %946, align 16, !tbaa !58
  %948 = load i64, ptr %132, align 16, !tbaa !21
  %949 = icmp sgt i64 %948, 0
  br i1 %949, label %950, label %952

950:                                              ; preds = %761
  %951 = getelementptr inbounds nuw i8, ptr %764, i64 1888
  br label %965

952:                                              ; preds = %996, %761
  %953 = fmul <2 x double> %920, %930
  %954 = fmul <2 x double> %920, %931
  %955 = getelementptr inbounds nuw i8, ptr %764, i64 2072
  %956 = load ptr, ptr %955, align 8, !tbaa !49
  %957 = getelementptr inbounds nuw i8, ptr %764, i64 2080
  %958 = load ptr, ptr %957, align 16, !tbaa !59
  %959 = load i64, ptr %133, align 8, !tbaa !22
  %960 = icmp sgt i64 %959, 0
  br i1 %960, label %961, label %1030

961:                                              ; preds = %952
  %962 = getelementptr inbounds nuw i8, ptr %764, i64 2024
  %963 = getelementptr inbounds nuw i8, ptr %764, i64 2032
  %964 = getelementptr inbounds nuw i8, ptr %764, i64 2040
  br label %1003

965:                                              ; preds = %950, %996
  %966 = phi i64 [ 0, %950 ], [ %1000, %996 ]
  %967 = getelementptr inbounds nuw <2 x double>, ptr %939, i64 %966
  %968 = load <2 x double>, ptr %967, align 16, !tbaa !26
  %969 = getelementptr inbounds nuw <2 x double>, ptr %941, i64 %966
  %970 = load <2 x double>, ptr %969, align 16, !tbaa !26
  %971 = fsub <2 x double> %968, %970
  %972 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %797, <2 x double> %971, <2 x double> %968)
  %973 = getelementptr inbounds nuw <2 x double>, ptr %945, i64 %966
  %974 = load <2 x double>, ptr %973, align 16, !tbaa !26
  %975 = select <2 x i1> %680, <2 x double> %974, <2 x double> %972
  store <2 x double> %975, ptr %973, align 16, !tbaa !26
  %976 = load i64, ptr %951, align 16, !tbaa !31
  %977 = icmp slt i64 %966, %976
  %978 = getelementptr inbounds nuw <2 x double>, ptr %943, i64 %966
  %979 = load <2 x double>, ptr %978, align 16, !tbaa !26
  br i1 %977, label %980, label %983

980:                                              ; preds = %965
  %981 = fmul <2 x double> %937, %970
  %982 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %935, <2 x double> %968, <2 x double> %981)
  br label %996

983:                                              ; preds = %965
  %984 = fmul <2 x double> %916, %968
  %985 = fmul <2 x double> %984, splat (double 0x3FD5555555555555)
  %986 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %914, <2 x double> splat (double 5.000000e-01), <2 x double> %985)
  %987 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %968, <2 x double> %986, <2 x double> %912)
  %988 = fmul <2 x double> %968, %987
  %989 = fmul <2 x double> %916, %970
  %990 = fmul <2 x double> %989, splat (double 0x3FD5555555555555)
  %991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %914, <2 x double> splat (double 5.000000e-01), <2 x double> %990)
  %992 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %970, <2 x double> %991, <2 x double> %912)
  %993 = fmul <2 x double> %970, %992
  %994 = fmul <2 x double> %933, %993
  %995 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %932, <2 x double> %988, <2 x double> %994)
  br label %996

996:                                              ; preds = %983, %980
  %997 = phi <2 x double> [ %995, %983 ], [ %982, %980 ]
  %998 = fmul <2 x double> %997, %979
  %999 = getelementptr inbounds nuw <2 x double>, ptr %947, i64 %966
  store <2 x double> %998, ptr %999, align 16, !tbaa !26
  %1000 = add nuw nsw i64 %966, 1
  %1001 = load i64, ptr %132, align 16, !tbaa !21
  %1002 = icmp slt i64 %1000, %1001
  br i1 %1002, label %965, label %952, !llvm.loop !60

1003:                                             ; preds = %961, %1003
  %1004 = phi i64 [ 0, %961 ], [ %1005, %1003 ]
  %1005 = add nuw nsw i64 %1004, 1
  %1006 = getelementptr inbounds nuw <2 x double>, ptr %956, i64 %1005
  %1007 = load <2 x double>, ptr %1006, align 16, !tbaa !26
  %1008 = getelementptr inbounds nuw <2 x double>, ptr %956, i64 %1004
  %1009 = load <2 x double>, ptr %1008, align 16, !tbaa !26
  %1010 = fsub <2 x double> %1007, %1009
  %1011 = load ptr, ptr %962, align 8, !tbaa !50
  %1012 = getelementptr inbounds nuw <2 x double>, ptr %1011, i64 %1004
  %1013 = load <2 x double>, ptr %1012, align 16, !tbaa !26
  %1014 = fmul <2 x double> %1010, %1013
  %1015 = getelementptr inbounds nuw <2 x double>, ptr %958, i64 %1005
  %1016 = load <2 x double>, ptr %1015, align 16, !tbaa !26
  %1017 = getelementptr inbounds nuw <2 x double>, ptr %958, i64 %1004
  %1018 = load <2 x double>, ptr %1017, align 16, !tbaa !26
  %1019 = fsub <2 x double> %1016, %1018
  %1020 = load ptr, ptr %963, align 16, !tbaa !61
  %1021 = getelementptr inbounds nuw <2 x double>, ptr %1020, i64 %1004
  %1022 = load <2 x double>, ptr %1021, align 16, !tbaa !26
  %1023 = fmul <2 x double> %1019, %1022
  %1024 = fmul <2 x double> %954, %1023
  %1025 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %953, <2 x double> %1014, <2 x double> %1024)
  %1026 = load ptr, ptr %964, align 8, !tbaa !62
  %1027 = getelementptr inbounds nuw <2 x double>, ptr %1026, i64 %1004
  store <2 x double> %1025, ptr %1027, align 16, !tbaa !26
  %1028 = load i64, ptr %133, align 8, !tbaa !22
  %1029 = icmp slt i64 %1005, %1028
  br i1 %1029, label %1003, label %1030, !llvm.loop !63

1030:                                             ; preds = %1003, %952
  %1031 = getelementptr inbounds nuw i8, ptr %764, i64 416
  %1032 = load <2 x double>, ptr %1031, align 16, !tbaa !26
  %1033 = fcmp ogt <2 x double> %1032, zeroinitializer
  %1034 = bitcast <2 x i1> %1033 to i2
  %1035 = icmp eq i2 %1034, 0
  br i1 %1035, label %1036, label %1040

1036:                                             ; preds = %1030
  %1037 = getelementptr inbounds nuw i8, ptr %764, i64 1792
  %1038 = load <2 x double>, ptr %1037, align 16, !tbaa !26
  %1039 = select <2 x i1> %680, <2 x double> %1038, <2 x double> zeroinitializer
  store <2 x double> %1039, ptr %1037, align 16, !tbaa !26
  br label %1149

1040:                                             ; preds = %1030
  %1041 = load <2 x double>, ptr %922, align 16, !tbaa !26
  %1042 = getelementptr inbounds nuw i8, ptr %764, i64 432
  %1043 = load <2 x double>, ptr %1042, align 16, !tbaa !26
  %1044 = getelementptr inbounds nuw i8, ptr %764, i64 464
  %1045 = load <2 x double>, ptr %1044, align 16, !tbaa !26
  %1046 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %1047 = fneg <2 x double> %1046
  %1048 = fdiv <2 x double> %1047, %1043
  %1049 = fcmp ogt <2 x double> %1048, splat (double -7.000000e+02)
  %1050 = select <2 x i1> %1049, <2 x double> %1048, <2 x double> splat (double -7.000000e+02)
  %1051 = fcmp olt <2 x double> %1050, splat (double 7.000000e+02)
  %1052 = select <2 x i1> %1051, <2 x double> %1050, <2 x double> splat (double 7.000000e+02)
  %1053 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1052, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %1054 = fadd <2 x double> %1053, splat (double 0xC338000000000000)
  %1055 = fneg <2 x double> %1054
  %1056 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1055, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %1052)
  %1057 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1055, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %1056)
  %1058 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1057, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %1059 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1058, <2 x double> %1057, <2 x double> splat (double 0x3E5AE64567F544E4))
  %1060 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1059, <2 x double> %1057, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %1061 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1060, <2 x double> %1057, <2 x double> splat (double 0x3EC71DE3A556C734))
  %1062 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1061, <2 x double> %1057, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %1063 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1062, <2 x double> %1057, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %1064 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1063, <2 x double> %1057, <2 x double> splat (double 0x3F56C16C16C16C17))
  %1065 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1064, <2 x double> %1057, <2 x double> splat (double 0x3F81111111111111))
  %1066 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1065, <2 x double> %1057, <2 x double> splat (double 0x3FA5555555555555))
  %1067 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1066, <2 x double> %1057, <2 x double> splat (double 0x3FC5555555555555))
  %1068 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1067, <2 x double> %1057, <2 x double> splat (double 5.000000e-01))
  %1069 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1068, <2 x double> %1057, <2 x double> splat (double 1.000000e+00))
  %1070 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1069, <2 x double> %1057, <2 x double> splat (double 1.000000e+00))
  %1071 = bitcast <2 x double> %1053 to <2 x i64>
  %1072 = shl <2 x i64> %1071, splat (i64 52)
  %1073 = bitcast <2 x double> %1070 to <2 x i64>
  %1074 = add <2 x i64> %1072, %1073
  %1075 = bitcast <2 x i64> %1074 to <2 x double>
  %1076 = fsub <2 x double> splat (double 1.000000e+00), %1075
  %1077 = load <2 x double>, ptr %924, align 16, !tbaa !26
  %1078 = fsub <2 x double> %1077, %1041
  %1079 = load ptr, ptr %944, align 8, !tbaa !57
  %1080 = load ptr, ptr %938, align 16, !tbaa !46
  %1081 = getelementptr inbounds nuw i8, ptr %764, i64 1936
  %1082 = load ptr, ptr %1081, align 16, !tbaa !47
  %1083 = load ptr, ptr %942, align 8, !tbaa !48
  %1084 = getelementptr inbounds nuw i8, ptr %764, i64 1928
  %1085 = load ptr, ptr %1084, align 8, !tbaa !64
  %1086 = getelementptr inbounds nuw i8, ptr %764, i64 1888
  %1087 = load i64, ptr %1086, align 16, !tbaa !31
  %1088 = load i64, ptr %132, align 16, !tbaa !21
  %1089 = icmp slt i64 %1087, %1088
  br i1 %1089, label %1090, label %1094

1090:                                             ; preds = %1040
  %1091 = getelementptr inbounds nuw i8, ptr %764, i64 448
  %1092 = load <2 x double>, ptr %1091, align 16, !tbaa !26
  %1093 = fneg <2 x double> %1092
  br label %1106

1094:                                             ; preds = %1106, %1040
  %1095 = phi <2 x double> [ zeroinitializer, %1040 ], [ %1137, %1106 ]
  %1096 = phi <2 x double> [ zeroinitializer, %1040 ], [ %1145, %1106 ]
  %1097 = getelementptr inbounds nuw i8, ptr %764, i64 944
  %1098 = load <2 x double>, ptr %1097, align 16, !tbaa !26
  %1099 = fsub <2 x double> %1098, %1077
  %1100 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1095, <2 x double> %1099, <2 x double> %1096)
  %1101 = getelementptr inbounds nuw i8, ptr %764, i64 1792
  %1102 = load <2 x double>, ptr %921, align 16, !tbaa !26
  %1103 = fmul <2 x double> %1102, %1100
  %1104 = load <2 x double>, ptr %1101, align 16, !tbaa !26
  %1105 = select <2 x i1> %680, <2 x double> %1104, <2 x double> %1103
  store <2 x double> %1105, ptr %1101, align 16, !tbaa !26
  br label %1149

1106:                                             ; preds = %1090, %1106
  %1107 = phi <2 x double> [ zeroinitializer, %1090 ], [ %1145, %1106 ]
  %1108 = phi i64 [ %1087, %1090 ], [ %1146, %1106 ]
  %1109 = getelementptr inbounds <2 x double>, ptr %1080, i64 %1108
  %1110 = load <2 x double>, ptr %1109, align 16, !tbaa !26
  %1111 = getelementptr inbounds <2 x double>, ptr %1079, i64 %1108
  %1112 = load <2 x double>, ptr %1111, align 16, !tbaa !26
  %1113 = fadd <2 x double> %1110, %1112
  %1114 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1113, <2 x double> splat (double 5.000000e-01), <2 x double> %1093)
  %1115 = fmul <2 x double> %1045, %1114
  %1116 = fcmp ogt <2 x double> %1115, splat (double -5.000000e+00)
  %1117 = select <2 x i1> %1116, <2 x double> %1115, <2 x double> splat (double -5.000000e+00)
  %1118 = fcmp olt <2 x double> %1117, splat (double 5.000000e+00)
  %1119 = select <2 x i1> %1118, <2 x double> %1117, <2 x double> splat (double 5.000000e+00)
  %1120 = fmul <2 x double> %1119, %1119
  %1121 = fadd <2 x double> %1120, splat (double 3.780000e+02)
  %1122 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1120, <2 x double> %1121, <2 x double> splat (double 1.732500e+04))
  %1123 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1120, <2 x double> %1122, <2 x double> splat (double 1.351350e+05))
  %1124 = fmul <2 x double> %1119, %1123
  %1125 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1120, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1126 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1120, <2 x double> %1125, <2 x double> splat (double 6.237000e+04))
  %1127 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1120, <2 x double> %1126, <2 x double> splat (double 1.351350e+05))
  %1128 = fdiv <2 x double> %1124, %1127
  %1129 = fadd <2 x double> %1128, splat (double 1.000000e+00)
  %1130 = fmul <2 x double> %1032, %1129
  %1131 = getelementptr inbounds <2 x double>, ptr %1082, i64 %1108
  %1132 = load <2 x double>, ptr %1131, align 16, !tbaa !26
  %1133 = fadd <2 x double> %1132, splat (double -1.000000e+00)
  %1134 = fadd <2 x double> %1133, %1130
  %1135 = fcmp ogt <2 x double> %1134, zeroinitializer
  %1136 = select <2 x i1> %1135, <2 x double> %1134, <2 x double> zeroinitializer
  %1137 = fmul <2 x double> %1076, %1136
  %1138 = fsub <2 x double> %1132, %1137
  %1139 = getelementptr inbounds <2 x double>, ptr %1085, i64 %1108
  %1140 = load <2 x double>, ptr %1139, align 16, !tbaa !26
  %1141 = select <2 x i1> %680, <2 x double> %1140, <2 x double> %1138
  store <2 x double> %1141, ptr %1139, align 16, !tbaa !26
  %1142 = getelementptr inbounds <2 x double>, ptr %1083, i64 %1108
  %1143 = load <2 x double>, ptr %1142, align 16, !tbaa !26
  %1144 = fmul <2 x double> %1078, %1143
  %1145 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1137, <2 x double> %1144, <2 x double> %1107)
  %1146 = add nsw i64 %1108, 1
  %1147 = load i64, ptr %132, align 16, !tbaa !21
  %1148 = icmp slt i64 %1146, %1147
  br i1 %1148, label %1106, label %1094, !llvm.loop !65

1149:                                             ; preds = %1036, %1094
  %1150 = add nuw nsw i64 %762, 1
  %1151 = load i64, ptr %169, align 8, !tbaa !20
  %1152 = icmp slt i64 %1150, %1151
  br i1 %1152, label %761, label %1153, !llvm.loop !66

1153:                                             ; preds = %1149, %654
  %1154 = phi i64 [ %759, %654 ], [ %1151, %1149 ]
  %1155 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %1156 = fcmp ogt <2 x double> %1155, zeroinitializer
  %1157 = select <2 x i1> %1156, <2 x i64> %538, <2 x i64> zeroinitializer
  %1158 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1157)
  %1159 = icmp eq i64 %1158, 0
  br i1 %1159, label %1166, label %1160

1160:                                             ; preds = %1153
  %1161 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, <2 x i64> noundef %1157) #7
  %1162 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %1163 = icmp eq <2 x i64> %1157, zeroinitializer
  %1164 = select <2 x i1> %1163, <2 x double> %1162, <2 x double> %1161
  store <2 x double> %1164, ptr %178, align 16, !tbaa !26
  %1165 = load i64, ptr %169, align 8, !tbaa !20
  br label %1166

1166:                                             ; preds = %1153, %1160, %536
  %1167 = phi i64 [ %1154, %1153 ], [ %1165, %1160 ], [ %541, %536 ]
  %1168 = load <2 x double>, ptr %180, align 16, !tbaa !26
  %1169 = icmp eq <2 x i64> %538, zeroinitializer
  %1170 = select <2 x i1> %1169, <2 x double> %1168, <2 x double> zeroinitializer
  store <2 x double> %1170, ptr %180, align 16, !tbaa !26
  %1171 = icmp sgt i64 %1167, 0
  br i1 %1171, label %1177, label %1172

1172:                                             ; preds = %1166
  %1173 = load <2 x double>, ptr %184, align 16, !tbaa !26
  br label %1873

1174:                                             ; preds = %1867
  %1175 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %1176 = icmp sgt i64 %1871, 0
  br i1 %1176, label %1878, label %1873

1177:                                             ; preds = %1166, %1867
  %1178 = phi i64 [ %1870, %1867 ], [ 0, %1166 ]
  %1179 = load ptr, ptr %142, align 8, !tbaa !28
  %1180 = getelementptr inbounds nuw %struct.Piece, ptr %1179, i64 %1178
  %1181 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %1182 = getelementptr inbounds nuw i8, ptr %1180, i64 1600
  %1183 = load <2 x double>, ptr %1182, align 16, !tbaa !26
  %1184 = fsub <2 x double> %1181, %1183
  %1185 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1184)
  %1186 = getelementptr inbounds nuw i8, ptr %1180, i64 544
  %1187 = load <2 x double>, ptr %1186, align 16, !tbaa !26
  %1188 = fcmp ogt <2 x double> %1187, splat (double 1.000000e-09)
  %1189 = select <2 x i1> %1188, <2 x double> %1187, <2 x double> splat (double 1.000000e-09)
  %1190 = fdiv <2 x double> %1185, %1189
  %1191 = getelementptr inbounds nuw i8, ptr %1180, i64 256
  %1192 = load <2 x double>, ptr %1191, align 16, !tbaa !26
  %1193 = fcmp ule <2 x double> %1187, zeroinitializer
  %1194 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1190)
  %1195 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1194)
  %1196 = select <2 x i1> %1193, <2 x double> splat (double 1.000000e+00), <2 x double> %1195
  %1197 = fmul <2 x double> %1192, %1196
  %1198 = getelementptr inbounds nuw i8, ptr %1180, i64 272
  %1199 = load <2 x double>, ptr %1198, align 16, !tbaa !26
  %1200 = getelementptr inbounds nuw i8, ptr %1180, i64 1408
  %1201 = load <2 x double>, ptr %1200, align 16, !tbaa !26
  %1202 = getelementptr inbounds nuw i8, ptr %1180, i64 1424
  %1203 = load <2 x double>, ptr %1202, align 16, !tbaa !26
  %1204 = fadd <2 x double> %1201, %1203
  %1205 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1199, <2 x double> %1204, <2 x double> %1197)
  %1206 = getelementptr inbounds nuw i8, ptr %1180, i64 288
  %1207 = load <2 x double>, ptr %1206, align 16, !tbaa !26
  %1208 = fcmp olt <2 x double> %1205, %1207
  %1209 = select <2 x i1> %1208, <2 x double> %1205, <2 x double> %1207
  %1210 = getelementptr inbounds nuw i8, ptr %1180, i64 1328
  %1211 = load <2 x double>, ptr %1210, align 16, !tbaa !26
  %1212 = getelementptr inbounds nuw i8, ptr %1180, i64 992
  %1213 = load <2 x double>, ptr %1212, align 16, !tbaa !26
  %1214 = getelementptr inbounds nuw i8, ptr %1180, i64 1344
  %1215 = load <2 x double>, ptr %1214, align 16, !tbaa !26
  %1216 = getelementptr inbounds nuw i8, ptr %1180, i64 1184
  %1217 = load <2 x double>, ptr %1216, align 16, !tbaa !26
  %1218 = fmul <2 x double> %1215, %1217
  %1219 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1211, <2 x double> %1213, <2 x double> %1218)
  %1220 = getelementptr inbounds nuw i8, ptr %1180, i64 304
  %1221 = load <2 x double>, ptr %1220, align 16, !tbaa !26
  %1222 = fneg <2 x double> %1221
  %1223 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1222, <2 x double> %1219, <2 x double> %1209)
  %1224 = getelementptr inbounds nuw i8, ptr %1180, i64 1312
  %1225 = load <2 x double>, ptr %1224, align 16, !tbaa !26
  %1226 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1221, <2 x double> %1225, <2 x double> splat (double 1.000000e+00))
  %1227 = fdiv <2 x double> %1223, %1226
  %1228 = getelementptr inbounds nuw i8, ptr %1180, i64 1872
  %1229 = load <2 x i64>, ptr %1228, align 16, !tbaa !26
  %1230 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %1231 = icmp eq <2 x i64> %1229, zeroinitializer
  %1232 = select <2 x i1> %1231, <2 x double> %1181, <2 x double> %1230
  %1233 = getelementptr inbounds nuw i8, ptr %1180, i64 1376
  store <2 x double> %1232, ptr %1233, align 16, !tbaa !26
  %1234 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %1235 = select <2 x i1> %1231, <2 x double> %1227, <2 x double> %1234
  %1236 = getelementptr inbounds nuw i8, ptr %1180, i64 800
  store <2 x double> %1235, ptr %1236, align 16, !tbaa !26
  %1237 = getelementptr inbounds nuw i8, ptr %1180, i64 224
  %1238 = load <2 x double>, ptr %1237, align 16, !tbaa !26
  %1239 = fcmp ule <2 x double> %1238, zeroinitializer
  %1240 = getelementptr inbounds nuw i8, ptr %1180, i64 736
  %1241 = getelementptr inbounds nuw i8, ptr %1180, i64 768
  %1242 = load <2 x double>, ptr %1241, align 16, !tbaa !26
  %1243 = fcmp ogt <2 x double> %1238, splat (double 1.000000e-30)
  %1244 = select <2 x i1> %1243, <2 x double> %1238, <2 x double> splat (double 1.000000e-30)
  %1245 = fdiv <2 x double> %1242, %1244
  %1246 = fcmp ogt <2 x double> %1245, zeroinitializer
  %1247 = select <2 x i1> %1246, <2 x double> %1245, <2 x double> zeroinitializer
  %1248 = fcmp olt <2 x double> %1247, splat (double 1.000000e+00)
  %1249 = select <2 x i1> %1248, <2 x double> %1247, <2 x double> splat (double 1.000000e+00)
  %1250 = select <2 x i1> %1239, <2 x double> zeroinitializer, <2 x double> %1249
  %1251 = getelementptr inbounds nuw i8, ptr %1180, i64 528
  %1252 = load <2 x double>, ptr %1251, align 16, !tbaa !26
  %1253 = fmul <2 x double> %1250, splat (double 4.180000e+03)
  %1254 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1253, <2 x double> %1238, <2 x double> %1252)
  %1255 = getelementptr inbounds nuw i8, ptr %1180, i64 1072
  %1256 = load <2 x double>, ptr %1255, align 16, !tbaa !26
  %1257 = getelementptr inbounds nuw i8, ptr %1180, i64 1264
  %1258 = load <2 x double>, ptr %1257, align 16, !tbaa !26
  %1259 = fmul <2 x double> %1215, %1258
  %1260 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1211, <2 x double> %1256, <2 x double> %1259)
  %1261 = getelementptr inbounds nuw i8, ptr %1180, i64 1840
  %1262 = load <2 x i64>, ptr %1261, align 16, !tbaa !26
  %1263 = fcmp ule <2 x double> %1252, zeroinitializer
  %1264 = getelementptr inbounds nuw i8, ptr %1180, i64 1728
  store <2 x double> %1250, ptr %1264, align 16, !tbaa !26
  %1265 = fmul <2 x double> %1225, %1254
  %1266 = icmp eq <2 x i64> %1262, splat (i64 -1)
  %1267 = select <2 x i1> %1263, <2 x i1> splat (i1 true), <2 x i1> %1266
  %1268 = select <2 x i1> %1267, <2 x double> zeroinitializer, <2 x double> %1265
  %1269 = getelementptr inbounds nuw i8, ptr %1180, i64 1744
  store <2 x double> %1268, ptr %1269, align 16, !tbaa !26
  %1270 = fmul <2 x double> %1260, %1254
  %1271 = select <2 x i1> %1267, <2 x double> zeroinitializer, <2 x double> %1270
  %1272 = getelementptr inbounds nuw i8, ptr %1180, i64 1760
  store <2 x double> %1271, ptr %1272, align 16, !tbaa !26
  %1273 = load <2 x double>, ptr %1180, align 16, !tbaa !26
  %1274 = load <2 x double>, ptr %1240, align 16, !tbaa !26
  %1275 = fsub <2 x double> %1273, %1274
  %1276 = fsub <2 x double> splat (double 1.000000e+00), %1250
  %1277 = getelementptr inbounds nuw i8, ptr %1180, i64 480
  %1278 = load <2 x double>, ptr %1277, align 16, !tbaa !26
  %1279 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1276, <2 x double> %1278, <2 x double> %1275)
  %1280 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %1281 = fdiv <2 x double> splat (double 1.000000e+00), %1280
  %1282 = getelementptr inbounds nuw i8, ptr %1180, i64 560
  %1283 = load <2 x double>, ptr %1282, align 16, !tbaa !26
  %1284 = fcmp ogt <2 x double> %1283, splat (double 1.000000e-30)
  %1285 = select <2 x i1> %1284, <2 x double> %1283, <2 x double> splat (double 1.000000e-30)
  %1286 = fdiv <2 x double> %1279, %1285
  %1287 = fadd <2 x double> %1281, %1286
  %1288 = getelementptr inbounds nuw i8, ptr %1180, i64 1776
  store <2 x double> %1287, ptr %1288, align 16, !tbaa !26
  %1289 = getelementptr inbounds nuw i8, ptr %1180, i64 1696
  store <2 x double> %1201, ptr %1289, align 16, !tbaa !26
  %1290 = getelementptr inbounds nuw i8, ptr %1180, i64 640
  %1291 = load <2 x double>, ptr %1290, align 16, !tbaa !26
  %1292 = getelementptr inbounds nuw i8, ptr %1180, i64 656
  %1293 = load <2 x double>, ptr %1292, align 16, !tbaa !26
  %1294 = getelementptr inbounds nuw i8, ptr %1180, i64 672
  %1295 = load <2 x double>, ptr %1294, align 16, !tbaa !26
  %1296 = getelementptr inbounds nuw i8, ptr %1180, i64 688
  %1297 = load <2 x double>, ptr %1296, align 16, !tbaa !26
  %1298 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1297, <2 x double> %1295)
  %1299 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1298, <2 x double> %1293)
  %1300 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1299, <2 x double> %1291)
  %1301 = getelementptr inbounds nuw i8, ptr %1180, i64 912
  store <2 x double> %1300, ptr %1301, align 16, !tbaa !26
  %1302 = getelementptr inbounds nuw i8, ptr %1180, i64 1104
  %1303 = load <2 x double>, ptr %1302, align 16, !tbaa !26
  %1304 = fmul <2 x double> %1211, %1303
  %1305 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1225, <2 x double> %1300, <2 x double> %1304)
  %1306 = getelementptr inbounds nuw i8, ptr %1180, i64 1296
  %1307 = load <2 x double>, ptr %1306, align 16, !tbaa !26
  %1308 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1215, <2 x double> %1307, <2 x double> %1305)
  %1309 = fmul <2 x double> %1308, splat (double 5.000000e-01)
  %1310 = getelementptr inbounds nuw i8, ptr %1180, i64 1680
  store <2 x double> %1309, ptr %1310, align 16, !tbaa !26
  %1311 = getelementptr inbounds nuw i8, ptr %1180, i64 576
  %1312 = load <2 x double>, ptr %1311, align 16, !tbaa !26
  %1313 = getelementptr inbounds nuw i8, ptr %1180, i64 592
  %1314 = load <2 x double>, ptr %1313, align 16, !tbaa !26
  %1315 = getelementptr inbounds nuw i8, ptr %1180, i64 608
  %1316 = load <2 x double>, ptr %1315, align 16, !tbaa !26
  %1317 = getelementptr inbounds nuw i8, ptr %1180, i64 624
  %1318 = load <2 x double>, ptr %1317, align 16, !tbaa !26
  %1319 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1318, <2 x double> %1316)
  %1320 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1319, <2 x double> %1314)
  %1321 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1320, <2 x double> %1312)
  %1322 = getelementptr inbounds nuw i8, ptr %1180, i64 1664
  store <2 x double> %1321, ptr %1322, align 16, !tbaa !26
  %1323 = getelementptr inbounds nuw i8, ptr %1180, i64 1888
  %1324 = load i64, ptr %1323, align 16, !tbaa !31
  %1325 = icmp eq i64 %1324, 0
  %1326 = getelementptr inbounds nuw i8, ptr %1180, i64 16
  %1327 = load <2 x double>, ptr %1326, align 16
  %1328 = fsub <2 x double> %1274, %1327
  %1329 = fdiv <2 x double> splat (double 1.000000e+00), %1328
  %1330 = fdiv <2 x double> %1321, %1274
  %1331 = select i1 %1325, <2 x double> %1330, <2 x double> %1329
  %1332 = load i64, ptr %132, align 16, !tbaa !21
  %1333 = getelementptr inbounds nuw i8, ptr %1180, i64 2008
  %1334 = load ptr, ptr %1333, align 8, !tbaa !35
  br i1 %1325, label %1335, label %1339

1335:                                             ; preds = %1177
  %1336 = getelementptr inbounds <2 x double>, ptr %1334, i64 %1332
  %1337 = load <2 x double>, ptr %1336, align 16, !tbaa !26
  %1338 = fmul <2 x double> %1331, %1337
  br label %1355

1339:                                             ; preds = %1177
  %1340 = shl nsw i64 %1332, 6
  %1341 = getelementptr inbounds i8, ptr %1334, i64 %1340
  %1342 = load <2 x double>, ptr %1341, align 16, !tbaa !26
  %1343 = getelementptr inbounds nuw i8, ptr %1341, i64 16
  %1344 = load <2 x double>, ptr %1343, align 16, !tbaa !26
  %1345 = getelementptr inbounds nuw i8, ptr %1341, i64 32
  %1346 = load <2 x double>, ptr %1345, align 16, !tbaa !26
  %1347 = getelementptr inbounds nuw i8, ptr %1341, i64 48
  %1348 = load <2 x double>, ptr %1347, align 16, !tbaa !26
  %1349 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1348, <2 x double> %1346)
  %1350 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1349, <2 x double> %1344)
  %1351 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1350, <2 x double> %1342)
  %1352 = icmp sgt i64 %1332, %1324
  %1353 = fmul <2 x double> %1331, %1351
  %1354 = select i1 %1352, <2 x double> %1353, <2 x double> %1351
  br label %1355

1355:                                             ; preds = %1335, %1339
  %1356 = phi <2 x double> [ %1338, %1335 ], [ %1354, %1339 ]
  %1357 = getelementptr inbounds nuw i8, ptr %1180, i64 1392
  %1358 = load <2 x double>, ptr %1357, align 16, !tbaa !26
  %1359 = fcmp ogt <2 x double> %1275, splat (double 0x3D719799812DEA11)
  %1360 = select <2 x i1> %1359, <2 x double> %1275, <2 x double> splat (double 0x3D719799812DEA11)
  %1361 = getelementptr inbounds nuw i8, ptr %1180, i64 1632
  store <2 x double> %1329, ptr %1361, align 16, !tbaa !26
  %1362 = getelementptr inbounds nuw i8, ptr %1180, i64 176
  %1363 = load <2 x double>, ptr %1362, align 16, !tbaa !26
  %1364 = fdiv <2 x double> %1363, %1360
  %1365 = getelementptr inbounds nuw i8, ptr %1180, i64 1648
  store <2 x double> %1364, ptr %1365, align 16, !tbaa !26
  %1366 = getelementptr inbounds nuw i8, ptr %1180, i64 1896
  %1367 = load ptr, ptr %1366, align 8, !tbaa !57
  %1368 = load i64, ptr %132, align 16, !tbaa !21
  %1369 = getelementptr <2 x double>, ptr %1367, i64 %1368
  %1370 = getelementptr i8, ptr %1369, i64 -16
  %1371 = load <2 x double>, ptr %1370, align 16, !tbaa !26
  %1372 = fadd <2 x double> %1358, %1371
  %1373 = fmul <2 x double> %1372, splat (double 5.000000e-01)
  %1374 = getelementptr inbounds nuw i8, ptr %1180, i64 48
  %1375 = load <2 x double>, ptr %1374, align 16, !tbaa !26
  %1376 = getelementptr inbounds nuw i8, ptr %1180, i64 64
  %1377 = load <2 x double>, ptr %1376, align 16, !tbaa !26
  %1378 = getelementptr inbounds nuw i8, ptr %1180, i64 80
  %1379 = load <2 x double>, ptr %1378, align 16, !tbaa !26
  %1380 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1373, <2 x double> %1379, <2 x double> %1377)
  %1381 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1373, <2 x double> %1380, <2 x double> %1375)
  %1382 = fmul <2 x double> %1356, %1381
  %1383 = fmul <2 x double> %1250, %1382
  %1384 = getelementptr inbounds nuw i8, ptr %1180, i64 512
  %1385 = load <2 x double>, ptr %1384, align 16, !tbaa !26
  %1386 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1383, <2 x double> %1385, <2 x double> splat (double 1.000000e+00))
  %1387 = fdiv <2 x double> splat (double 1.000000e+00), %1386
  %1388 = icmp eq <2 x i64> %1262, zeroinitializer
  %1389 = select <2 x i1> %1388, <2 x double> %1387, <2 x double> splat (double 1.000000e+00)
  %1390 = getelementptr inbounds nuw i8, ptr %1180, i64 1712
  store <2 x double> %1389, ptr %1390, align 16, !tbaa !26
  %1391 = fmul <2 x double> %1382, %1389
  %1392 = getelementptr inbounds nuw i8, ptr %1180, i64 1504
  store <2 x double> %1391, ptr %1392, align 16, !tbaa !26
  %1393 = fmul <2 x double> %1309, splat (double 2.000000e+00)
  %1394 = getelementptr inbounds nuw i8, ptr %1180, i64 96
  %1395 = load <2 x double>, ptr %1394, align 16, !tbaa !26
  %1396 = getelementptr inbounds nuw i8, ptr %1180, i64 112
  %1397 = load <2 x double>, ptr %1396, align 16, !tbaa !26
  %1398 = getelementptr inbounds nuw i8, ptr %1180, i64 128
  %1399 = load <2 x double>, ptr %1398, align 16, !tbaa !26
  %1400 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1358, <2 x double> %1399, <2 x double> %1397)
  %1401 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1358, <2 x double> %1400, <2 x double> %1395)
  %1402 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1393, <2 x double> %1401, <2 x double> %1391)
  %1403 = getelementptr inbounds nuw i8, ptr %1180, i64 1536
  store <2 x double> %1402, ptr %1403, align 16, !tbaa !26
  %1404 = fmul <2 x double> %1235, %1276
  %1405 = getelementptr inbounds nuw i8, ptr %1180, i64 496
  %1406 = load <2 x double>, ptr %1405, align 16, !tbaa !26
  %1407 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1404, <2 x double> %1406, <2 x double> splat (double 1.000000e+00))
  %1408 = fdiv <2 x double> %1235, %1407
  %1409 = load i64, ptr %133, align 8, !tbaa !22
  %1410 = sitofp i64 %1409 to double
  %1411 = fmul double %1410, 2.000000e+00
  %1412 = insertelement <2 x double> poison, double %1411, i64 0
  %1413 = shufflevector <2 x double> %1412, <2 x double> poison, <2 x i32> zeroinitializer
  %1414 = fmul <2 x double> %1364, %1413
  %1415 = fadd <2 x double> %1408, %1414
  %1416 = fdiv <2 x double> %1408, %1415
  %1417 = fmul <2 x double> %1321, %1414
  %1418 = select <2 x i1> %1388, <2 x double> %1408, <2 x double> %1417
  %1419 = getelementptr inbounds nuw i8, ptr %1180, i64 1520
  store <2 x double> %1418, ptr %1419, align 16, !tbaa !26
  %1420 = fmul <2 x double> %1414, %1416
  %1421 = select <2 x i1> %1388, <2 x double> %1408, <2 x double> %1420
  %1422 = getelementptr inbounds nuw i8, ptr %1180, i64 1552
  store <2 x double> %1421, ptr %1422, align 16, !tbaa !26
  %1423 = select <2 x i1> %1388, <2 x double> splat (double 1.000000e+00), <2 x double> %1416
  %1424 = getelementptr inbounds nuw i8, ptr %1180, i64 1568
  store <2 x double> %1423, ptr %1424, align 16, !tbaa !26
  br i1 %1325, label %1586, label %1425

1425:                                             ; preds = %1355
  %1426 = getelementptr inbounds nuw i8, ptr %1180, i64 144
  %1427 = load <2 x double>, ptr %1426, align 16, !tbaa !26
  %1428 = getelementptr inbounds nuw i8, ptr %1180, i64 160
  %1429 = load <2 x double>, ptr %1428, align 16, !tbaa !26
  %1430 = getelementptr inbounds nuw i8, ptr %1180, i64 384
  %1431 = load <2 x double>, ptr %1430, align 16, !tbaa !26
  %1432 = load i64, ptr %132, align 16, !tbaa !21
  %1433 = fsub <2 x double> %1300, %1431
  %1434 = fmul <2 x double> %1397, splat (double 5.000000e-01)
  %1435 = fmul <2 x double> %1399, splat (double 0x3FE5555555555555)
  %1436 = getelementptr inbounds nuw i8, ptr %1180, i64 1984
  %1437 = load ptr, ptr %1436, align 16, !tbaa !67
  %1438 = getelementptr inbounds nuw i8, ptr %1180, i64 1992
  %1439 = load ptr, ptr %1438, align 8, !tbaa !48
  %1440 = getelementptr inbounds nuw i8, ptr %1180, i64 1920
  %1441 = load ptr, ptr %1440, align 16, !tbaa !58
  %1442 = getelementptr inbounds nuw i8, ptr %1180, i64 1960
  %1443 = load ptr, ptr %1442, align 8, !tbaa !68
  %1444 = getelementptr inbounds nuw i8, ptr %1180, i64 1968
  %1445 = load ptr, ptr %1444, align 16, !tbaa !69
  %1446 = getelementptr inbounds nuw i8, ptr %1180, i64 1976
  %1447 = load ptr, ptr %1446, align 8, !tbaa !70
  %1448 = getelementptr inbounds nuw i8, ptr %1180, i64 1944
  %1449 = load ptr, ptr %1448, align 8, !tbaa !71
  %1450 = getelementptr inbounds nuw i8, ptr %1180, i64 1952
  %1451 = load ptr, ptr %1450, align 16, !tbaa !72
  %1452 = icmp sgt i64 %1432, 0
  br i1 %1452, label %1453, label %1698

1453:                                             ; preds = %1425
  %1454 = load <2 x double>, ptr %1367, align 16, !tbaa !26
  %1455 = getelementptr inbounds nuw i8, ptr %1180, i64 720
  %1456 = load <2 x double>, ptr %1455, align 16, !tbaa !26
  %1457 = getelementptr inbounds nuw i8, ptr %1180, i64 704
  %1458 = load <2 x double>, ptr %1457, align 16, !tbaa !26
  %1459 = fmul <2 x double> %1309, splat (double -2.000000e+00)
  %1460 = fmul <2 x double> %1459, %1358
  %1461 = fmul <2 x double> %1358, %1460
  %1462 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1358, <2 x double> %1435, <2 x double> %1434)
  %1463 = fmul <2 x double> %1461, %1462
  %1464 = getelementptr inbounds nuw i8, ptr %1180, i64 2008
  %1465 = fmul <2 x double> %1328, %1456
  %1466 = fdiv <2 x double> %1458, %1427
  br label %1467

1467:                                             ; preds = %1453, %1551
  %1468 = phi <2 x double> [ %1454, %1453 ], [ %1555, %1551 ]
  %1469 = phi <2 x double> [ zeroinitializer, %1453 ], [ %1552, %1551 ]
  %1470 = phi <2 x double> [ zeroinitializer, %1453 ], [ %1553, %1551 ]
  %1471 = phi <2 x double> [ zeroinitializer, %1453 ], [ %1554, %1551 ]
  %1472 = phi <2 x double> [ zeroinitializer, %1453 ], [ %1581, %1551 ]
  %1473 = phi <2 x double> [ zeroinitializer, %1453 ], [ %1583, %1551 ]
  %1474 = phi <2 x double> [ %1429, %1453 ], [ %1556, %1551 ]
  %1475 = phi i64 [ 0, %1453 ], [ %1477, %1551 ]
  %1476 = phi <2 x double> [ zeroinitializer, %1453 ], [ %1557, %1551 ]
  %1477 = add nuw nsw i64 %1475, 1
  %1478 = icmp slt i64 %1477, %1432
  br i1 %1478, label %1479, label %1548

1479:                                             ; preds = %1467
  %1480 = getelementptr inbounds nuw <2 x double>, ptr %1367, i64 %1477
  %1481 = load <2 x double>, ptr %1480, align 16, !tbaa !26
  %1482 = icmp slt i64 %1477, %1324
  br i1 %1482, label %1490, label %1483

1483:                                             ; preds = %1479
  %1484 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1481, <2 x double> %1399, <2 x double> %1397)
  %1485 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1481, <2 x double> %1484, <2 x double> %1395)
  %1486 = fneg <2 x double> %1481
  %1487 = fmul <2 x double> %1481, %1486
  %1488 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1481, <2 x double> %1435, <2 x double> %1434)
  %1489 = fmul <2 x double> %1487, %1488
  br label %1490

1490:                                             ; preds = %1479, %1483
  %1491 = phi <2 x double> [ %1485, %1483 ], [ %1429, %1479 ]
  %1492 = phi <2 x double> [ %1489, %1483 ], [ zeroinitializer, %1479 ]
  %1493 = load i64, ptr %1323, align 16, !tbaa !31
  %1494 = icmp eq i64 %1493, 0
  %1495 = load ptr, ptr %1464, align 8, !tbaa !35
  br i1 %1494, label %1496, label %1500

1496:                                             ; preds = %1490
  %1497 = getelementptr inbounds nuw <2 x double>, ptr %1495, i64 %1477
  %1498 = load <2 x double>, ptr %1497, align 16, !tbaa !26
  %1499 = fmul <2 x double> %1329, %1498
  br label %1516

1500:                                             ; preds = %1490
  %1501 = shl nsw i64 %1477, 6
  %1502 = getelementptr inbounds nuw i8, ptr %1495, i64 %1501
  %1503 = load <2 x double>, ptr %1502, align 16, !tbaa !26
  %1504 = getelementptr inbounds nuw i8, ptr %1502, i64 16
  %1505 = load <2 x double>, ptr %1504, align 16, !tbaa !26
  %1506 = getelementptr inbounds nuw i8, ptr %1502, i64 32
  %1507 = load <2 x double>, ptr %1506, align 16, !tbaa !26
  %1508 = getelementptr inbounds nuw i8, ptr %1502, i64 48
  %1509 = load <2 x double>, ptr %1508, align 16, !tbaa !26
  %1510 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1509, <2 x double> %1507)
  %1511 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1510, <2 x double> %1505)
  %1512 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1274, <2 x double> %1511, <2 x double> %1503)
  %1513 = icmp slt i64 %1475, %1493
  %1514 = fmul <2 x double> %1329, %1512
  %1515 = select i1 %1513, <2 x double> %1512, <2 x double> %1514
  br label %1516

1516:                                             ; preds = %1500, %1496
  %1517 = phi <2 x double> [ %1499, %1496 ], [ %1515, %1500 ]
  %1518 = icmp slt i64 %1475, %1493
  br i1 %1518, label %1525, label %1519

1519:                                             ; preds = %1516
  %1520 = fadd <2 x double> %1468, %1481
  %1521 = fmul <2 x double> %1520, splat (double 5.000000e-01)
  %1522 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1521, <2 x double> %1379, <2 x double> %1377)
  %1523 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1521, <2 x double> %1522, <2 x double> %1375)
  %1524 = fmul <2 x double> %1523, %1517
  br label %1535

1525:                                             ; preds = %1516
  %1526 = icmp slt i64 %1477, %1493
  br i1 %1526, label %1527, label %1529

1527:                                             ; preds = %1525
  %1528 = fmul <2 x double> %1427, %1517
  br label %1535

1529:                                             ; preds = %1525
  %1530 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1481, <2 x double> %1379, <2 x double> %1377)
  %1531 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1481, <2 x double> %1530, <2 x double> %1375)
  %1532 = fdiv <2 x double> %1465, %1531
  %1533 = fadd <2 x double> %1466, %1532
  %1534 = fdiv <2 x double> %1517, %1533
  br label %1535

1535:                                             ; preds = %1519, %1527, %1529
  %1536 = phi <2 x double> [ %1524, %1519 ], [ %1528, %1527 ], [ %1534, %1529 ]
  br i1 %1482, label %1541, label %1537

1537:                                             ; preds = %1535
  %1538 = getelementptr inbounds nuw <2 x double>, ptr %1437, i64 %1477
  %1539 = load <2 x double>, ptr %1538, align 16, !tbaa !26
  %1540 = fmul <2 x double> %1309, %1539
  br label %1541

1541:                                             ; preds = %1535, %1537
  %1542 = phi <2 x double> [ %1540, %1537 ], [ zeroinitializer, %1535 ]
  %1543 = fneg <2 x double> %1542
  %1544 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1543, <2 x double> %1474, <2 x double> %1536)
  %1545 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1542, <2 x double> %1491, <2 x double> %1536)
  %1546 = fadd <2 x double> %1476, %1492
  %1547 = fmul <2 x double> %1546, %1542
  br label %1551

1548:                                             ; preds = %1467
  %1549 = load <2 x double>, ptr %1392, align 16, !tbaa !26
  %1550 = load <2 x double>, ptr %1403, align 16, !tbaa !26
  br label %1551

1551:                                             ; preds = %1548, %1541
  %1552 = phi <2 x double> [ %1544, %1541 ], [ %1549, %1548 ]
  %1553 = phi <2 x double> [ %1545, %1541 ], [ %1550, %1548 ]
  %1554 = phi <2 x double> [ %1547, %1541 ], [ %1463, %1548 ]
  %1555 = phi <2 x double> [ %1481, %1541 ], [ %1468, %1548 ]
  %1556 = phi <2 x double> [ %1491, %1541 ], [ %1474, %1548 ]
  %1557 = phi <2 x double> [ %1492, %1541 ], [ %1476, %1548 ]
  %1558 = getelementptr inbounds nuw <2 x double>, ptr %1439, i64 %1475
  %1559 = load <2 x double>, ptr %1558, align 16, !tbaa !26
  %1560 = icmp slt i64 %1475, %1324
  %1561 = select i1 %1560, <2 x double> %1431, <2 x double> %1433
  %1562 = fmul <2 x double> %1225, %1561
  %1563 = fmul <2 x double> %1562, %1559
  %1564 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1563, <2 x double> %1474, <2 x double> %1552)
  %1565 = fadd <2 x double> %1470, %1564
  %1566 = fsub <2 x double> %1554, %1471
  %1567 = fneg <2 x double> %1563
  %1568 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1567, <2 x double> %1476, <2 x double> %1566)
  %1569 = getelementptr inbounds nuw <2 x double>, ptr %1441, i64 %1475
  %1570 = load <2 x double>, ptr %1569, align 16, !tbaa !26
  %1571 = fsub <2 x double> %1568, %1570
  %1572 = fneg <2 x double> %1469
  %1573 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1572, <2 x double> %1473, <2 x double> %1565)
  %1574 = fdiv <2 x double> splat (double 1.000000e+00), %1573
  %1575 = getelementptr inbounds nuw <2 x double>, ptr %1443, i64 %1475
  store <2 x double> %1571, ptr %1575, align 16, !tbaa !26
  %1576 = getelementptr inbounds nuw <2 x double>, ptr %1445, i64 %1475
  store <2 x double> %1469, ptr %1576, align 16, !tbaa !26
  %1577 = fadd <2 x double> %1469, %1553
  %1578 = fsub <2 x double> %1577, %1565
  %1579 = getelementptr inbounds nuw <2 x double>, ptr %1447, i64 %1475
  store <2 x double> %1578, ptr %1579, align 16, !tbaa !26
  %1580 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1469, <2 x double> %1472, <2 x double> %1571)
  %1581 = fmul <2 x double> %1580, %1574
  %1582 = getelementptr inbounds nuw <2 x double>, ptr %1449, i64 %1475
  store <2 x double> %1581, ptr %1582, align 16, !tbaa !26
  %1583 = fmul <2 x double> %1553, %1574
  %1584 = getelementptr inbounds nuw <2 x double>, ptr %1451, i64 %1475
  store <2 x double> %1583, ptr %1584, align 16, !tbaa !26
  %1585 = icmp eq i64 %1477, %1432
  br i1 %1585, label %1698, label %1467, !llvm.loop !73

1586:                                             ; preds = %1355
  %1587 = getelementptr inbounds nuw i8, ptr %1180, i64 384
  %1588 = load <2 x double>, ptr %1587, align 16, !tbaa !26
  %1589 = load i64, ptr %132, align 16, !tbaa !21
  %1590 = fsub <2 x double> %1300, %1588
  %1591 = fmul <2 x double> %1225, %1590
  %1592 = fmul <2 x double> %1397, splat (double 5.000000e-01)
  %1593 = fmul <2 x double> %1399, splat (double 0x3FE5555555555555)
  %1594 = getelementptr inbounds nuw i8, ptr %1180, i64 1984
  %1595 = load ptr, ptr %1594, align 16, !tbaa !67
  %1596 = getelementptr inbounds nuw i8, ptr %1180, i64 1992
  %1597 = load ptr, ptr %1596, align 8, !tbaa !48
  %1598 = getelementptr inbounds nuw i8, ptr %1180, i64 1920
  %1599 = load ptr, ptr %1598, align 16, !tbaa !58
  %1600 = getelementptr inbounds nuw i8, ptr %1180, i64 1960
  %1601 = load ptr, ptr %1600, align 8, !tbaa !68
  %1602 = getelementptr inbounds nuw i8, ptr %1180, i64 1968
  %1603 = load ptr, ptr %1602, align 16, !tbaa !69
  %1604 = getelementptr inbounds nuw i8, ptr %1180, i64 1976
  %1605 = load ptr, ptr %1604, align 8, !tbaa !70
  %1606 = getelementptr inbounds nuw i8, ptr %1180, i64 1944
  %1607 = load ptr, ptr %1606, align 8, !tbaa !71
  %1608 = getelementptr inbounds nuw i8, ptr %1180, i64 1952
  %1609 = load ptr, ptr %1608, align 16, !tbaa !72
  %1610 = icmp sgt i64 %1589, 0
  br i1 %1610, label %1611, label %1698

1611:                                             ; preds = %1586
  %1612 = load <2 x double>, ptr %1367, align 16, !tbaa !26
  %1613 = fneg <2 x double> %1612
  %1614 = fmul <2 x double> %1612, %1613
  %1615 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1612, <2 x double> %1593, <2 x double> %1592)
  %1616 = fmul <2 x double> %1614, %1615
  %1617 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1612, <2 x double> %1399, <2 x double> %1397)
  %1618 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1612, <2 x double> %1617, <2 x double> %1395)
  %1619 = fmul <2 x double> %1309, splat (double -2.000000e+00)
  %1620 = fmul <2 x double> %1619, %1358
  %1621 = fmul <2 x double> %1358, %1620
  %1622 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1358, <2 x double> %1593, <2 x double> %1592)
  %1623 = fmul <2 x double> %1621, %1622
  %1624 = getelementptr inbounds nuw i8, ptr %1180, i64 2008
  br label %1625

1625:                                             ; preds = %1611, %1666
  %1626 = phi <2 x double> [ %1612, %1611 ], [ %1670, %1666 ]
  %1627 = phi <2 x double> [ zeroinitializer, %1611 ], [ %1667, %1666 ]
  %1628 = phi <2 x double> [ zeroinitializer, %1611 ], [ %1668, %1666 ]
  %1629 = phi <2 x double> [ zeroinitializer, %1611 ], [ %1669, %1666 ]
  %1630 = phi <2 x double> [ zeroinitializer, %1611 ], [ %1693, %1666 ]
  %1631 = phi <2 x double> [ zeroinitializer, %1611 ], [ %1695, %1666 ]
  %1632 = phi <2 x double> [ %1618, %1611 ], [ %1671, %1666 ]
  %1633 = phi i64 [ 0, %1611 ], [ %1635, %1666 ]
  %1634 = phi <2 x double> [ %1616, %1611 ], [ %1672, %1666 ]
  %1635 = add nuw nsw i64 %1633, 1
  %1636 = icmp slt i64 %1635, %1589
  br i1 %1636, label %1637, label %1663

1637:                                             ; preds = %1625
  %1638 = getelementptr inbounds nuw <2 x double>, ptr %1367, i64 %1635
  %1639 = load <2 x double>, ptr %1638, align 16, !tbaa !26
  %1640 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1639, <2 x double> %1399, <2 x double> %1397)
  %1641 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1639, <2 x double> %1640, <2 x double> %1395)
  %1642 = fneg <2 x double> %1639
  %1643 = fmul <2 x double> %1639, %1642
  %1644 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1639, <2 x double> %1593, <2 x double> %1592)
  %1645 = fmul <2 x double> %1643, %1644
  %1646 = fadd <2 x double> %1626, %1639
  %1647 = fmul <2 x double> %1646, splat (double 5.000000e-01)
  %1648 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1647, <2 x double> %1379, <2 x double> %1377)
  %1649 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1647, <2 x double> %1648, <2 x double> %1375)
  %1650 = load ptr, ptr %1624, align 8, !tbaa !35
  %1651 = getelementptr inbounds nuw <2 x double>, ptr %1650, i64 %1635
  %1652 = load <2 x double>, ptr %1651, align 16, !tbaa !26
  %1653 = fmul <2 x double> %1330, %1652
  %1654 = fmul <2 x double> %1653, %1649
  %1655 = getelementptr inbounds nuw <2 x double>, ptr %1595, i64 %1635
  %1656 = load <2 x double>, ptr %1655, align 16, !tbaa !26
  %1657 = fmul <2 x double> %1309, %1656
  %1658 = fneg <2 x double> %1657
  %1659 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1658, <2 x double> %1632, <2 x double> %1654)
  %1660 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1657, <2 x double> %1641, <2 x double> %1654)
  %1661 = fadd <2 x double> %1634, %1645
  %1662 = fmul <2 x double> %1661, %1657
  br label %1666

1663:                                             ; preds = %1625
  %1664 = load <2 x double>, ptr %1392, align 16, !tbaa !26
  %1665 = load <2 x double>, ptr %1403, align 16, !tbaa !26
  br label %1666

1666:                                             ; preds = %1663, %1637
  %1667 = phi <2 x double> [ %1659, %1637 ], [ %1664, %1663 ]
  %1668 = phi <2 x double> [ %1660, %1637 ], [ %1665, %1663 ]
  %1669 = phi <2 x double> [ %1662, %1637 ], [ %1623, %1663 ]
  %1670 = phi <2 x double> [ %1639, %1637 ], [ %1626, %1663 ]
  %1671 = phi <2 x double> [ %1641, %1637 ], [ %1632, %1663 ]
  %1672 = phi <2 x double> [ %1645, %1637 ], [ %1634, %1663 ]
  %1673 = getelementptr inbounds nuw <2 x double>, ptr %1597, i64 %1633
  %1674 = load <2 x double>, ptr %1673, align 16, !tbaa !26
  %1675 = fmul <2 x double> %1591, %1674
  %1676 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1675, <2 x double> %1632, <2 x double> %1667)
  %1677 = fadd <2 x double> %1628, %1676
  %1678 = fsub <2 x double> %1669, %1629
  %1679 = fneg <2 x double> %1675
  %1680 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1679, <2 x double> %1634, <2 x double> %1678)
  %1681 = getelementptr inbounds nuw <2 x double>, ptr %1599, i64 %1633
  %1682 = load <2 x double>, ptr %1681, align 16, !tbaa !26
  %1683 = fsub <2 x double> %1680, %1682
  %1684 = fneg <2 x double> %1627
  %1685 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1684, <2 x double> %1631, <2 x double> %1677)
  %1686 = fdiv <2 x double> splat (double 1.000000e+00), %1685
  %1687 = getelementptr inbounds nuw <2 x double>, ptr %1601, i64 %1633
  store <2 x double> %1683, ptr %1687, align 16, !tbaa !26
  %1688 = getelementptr inbounds nuw <2 x double>, ptr %1603, i64 %1633
  store <2 x double> %1627, ptr %1688, align 16, !tbaa !26
  %1689 = fadd <2 x double> %1627, %1668
  %1690 = fsub <2 x double> %1689, %1677
  %1691 = getelementptr inbounds nuw <2 x double>, ptr %1605, i64 %1633
  store <2 x double> %1690, ptr %1691, align 16, !tbaa !26
  %1692 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1627, <2 x double> %1630, <2 x double> %1683)
  %1693 = fmul <2 x double> %1692, %1686
  %1694 = getelementptr inbounds nuw <2 x double>, ptr %1607, i64 %1633
  store <2 x double> %1693, ptr %1694, align 16, !tbaa !26
  %1695 = fmul <2 x double> %1668, %1686
  %1696 = getelementptr inbounds nuw <2 x double>, ptr %1609, i64 %1633
  store <2 x double> %1695, ptr %1696, align 16, !tbaa !26
  %1697 = icmp eq i64 %1635, %1589
  br i1 %1697, label %1698, label %1625, !llvm.loop !74

1698:                                             ; preds = %1551, %1666, %1425, %1586
  %1699 = getelementptr inbounds nuw i8, ptr %1180, i64 1944
  %1700 = load ptr, ptr %1699, align 8, !tbaa !71
  %1701 = load i64, ptr %132, align 16, !tbaa !21
  %1702 = add nsw i64 %1701, -1
  %1703 = getelementptr inbounds <2 x double>, ptr %1700, i64 %1702
  %1704 = load <2 x double>, ptr %1703, align 16, !tbaa !26
  %1705 = getelementptr inbounds nuw i8, ptr %1180, i64 1952
  %1706 = load ptr, ptr %1705, align 16, !tbaa !72
  %1707 = getelementptr inbounds <2 x double>, ptr %1706, i64 %1702
  %1708 = load <2 x double>, ptr %1707, align 16, !tbaa !26
  %1709 = load <2 x double>, ptr %1392, align 16, !tbaa !26
  %1710 = fmul <2 x double> %1704, %1709
  %1711 = fsub <2 x double> splat (double 1.000000e+00), %1708
  %1712 = fmul <2 x double> %1709, %1711
  %1713 = load <2 x double>, ptr %1419, align 16, !tbaa !26
  %1714 = load <2 x double>, ptr %1233, align 16, !tbaa !26
  %1715 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1713, <2 x double> %1714, <2 x double> %1710)
  %1716 = load <2 x double>, ptr %1272, align 16, !tbaa !26
  %1717 = fsub <2 x double> %1715, %1716
  %1718 = fadd <2 x double> %1712, %1713
  %1719 = load <2 x double>, ptr %1269, align 16, !tbaa !26
  %1720 = fadd <2 x double> %1718, %1719
  %1721 = load <2 x i64>, ptr %1261, align 16, !tbaa !26
  %1722 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1721)
  %1723 = icmp eq i64 %1722, 0
  %1724 = load i64, ptr %133, align 8, !tbaa !22
  br i1 %1723, label %1725, label %1740

1725:                                             ; preds = %1698
  %1726 = icmp slt i64 %1724, 0
  br i1 %1726, label %1731, label %1727

1727:                                             ; preds = %1725
  %1728 = getelementptr inbounds nuw i8, ptr %1180, i64 352
  %1729 = getelementptr inbounds nuw i8, ptr %1180, i64 2064
  %1730 = load <2 x double>, ptr %1728, align 16, !tbaa !26
  br label %1733

1731:                                             ; preds = %1733, %1725
  %1732 = getelementptr inbounds nuw i8, ptr %1180, i64 1456
  store <2 x double> %1717, ptr %1732, align 16, !tbaa !26
  br label %1867

1733:                                             ; preds = %1727, %1733
  %1734 = phi i64 [ 0, %1727 ], [ %1737, %1733 ]
  %1735 = load ptr, ptr %1729, align 16, !tbaa !75
  %1736 = getelementptr inbounds nuw <2 x double>, ptr %1735, i64 %1734
  store <2 x double> %1730, ptr %1736, align 16, !tbaa !26
  %1737 = add nuw nsw i64 %1734, 1
  %1738 = load i64, ptr %133, align 8, !tbaa !22
  %1739 = icmp slt i64 %1734, %1738
  br i1 %1739, label %1733, label %1731, !llvm.loop !76

1740:                                             ; preds = %1698
  %1741 = load <2 x double>, ptr %1240, align 16, !tbaa !26
  %1742 = load <2 x double>, ptr %1289, align 16, !tbaa !26
  %1743 = getelementptr inbounds nuw i8, ptr %1180, i64 320
  %1744 = load <2 x double>, ptr %1743, align 16, !tbaa !26
  %1745 = fmul <2 x double> %1742, %1744
  %1746 = load <2 x double>, ptr %1180, align 16, !tbaa !26
  %1747 = fsub <2 x double> %1746, %1741
  %1748 = sitofp i64 %1724 to double
  %1749 = insertelement <2 x double> poison, double %1748, i64 0
  %1750 = shufflevector <2 x double> %1749, <2 x double> poison, <2 x i32> zeroinitializer
  %1751 = fdiv <2 x double> %1747, %1750
  %1752 = load <2 x double>, ptr %1422, align 16, !tbaa !26
  %1753 = load <2 x double>, ptr %1424, align 16, !tbaa !26
  %1754 = getelementptr inbounds nuw i8, ptr %1180, i64 352
  %1755 = load <2 x double>, ptr %1754, align 16, !tbaa !26
  %1756 = getelementptr inbounds nuw i8, ptr %1180, i64 2064
  %1757 = load ptr, ptr %1756, align 16, !tbaa !75
  %1758 = getelementptr inbounds <2 x double>, ptr %1757, i64 %1724
  store <2 x double> %1755, ptr %1758, align 16, !tbaa !26
  %1759 = icmp sgt i64 %1724, 0
  br i1 %1759, label %1760, label %1851

1760:                                             ; preds = %1740
  %1761 = fneg <2 x double> %1745
  %1762 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1761, <2 x double> %1753, <2 x double> %1752)
  %1763 = fsub <2 x double> splat (double 1.000000e+00), %1753
  %1764 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1745, <2 x double> %1763, <2 x double> %1752)
  %1765 = getelementptr inbounds nuw i8, ptr %1180, i64 2072
  %1766 = getelementptr inbounds nuw i8, ptr %1180, i64 2080
  %1767 = getelementptr inbounds nuw i8, ptr %1180, i64 192
  %1768 = fmul <2 x double> %1745, splat (double -5.000000e-01)
  %1769 = getelementptr inbounds nuw i8, ptr %1180, i64 2040
  %1770 = getelementptr inbounds nuw i8, ptr %1180, i64 2048
  %1771 = getelementptr inbounds nuw i8, ptr %1180, i64 2056
  br label %1772

1772:                                             ; preds = %1760, %1826
  %1773 = phi <2 x double> [ %1764, %1760 ], [ %1828, %1826 ]
  %1774 = phi <2 x double> [ %1762, %1760 ], [ %1829, %1826 ]
  %1775 = phi <2 x double> [ %1714, %1760 ], [ %1844, %1826 ]
  %1776 = phi <2 x double> [ zeroinitializer, %1760 ], [ %1847, %1826 ]
  %1777 = phi <2 x double> [ %1755, %1760 ], [ %1790, %1826 ]
  %1778 = phi i64 [ %1724, %1760 ], [ %1779, %1826 ]
  %1779 = add nsw i64 %1778, -1
  %1780 = uitofp nneg i64 %1779 to double
  %1781 = insertelement <2 x double> poison, double %1780, i64 0
  %1782 = shufflevector <2 x double> %1781, <2 x double> poison, <2 x i32> zeroinitializer
  %1783 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1782, <2 x double> %1751, <2 x double> %1741)
  %1784 = load <2 x double>, ptr %1290, align 16, !tbaa !26
  %1785 = load <2 x double>, ptr %1292, align 16, !tbaa !26
  %1786 = load <2 x double>, ptr %1294, align 16, !tbaa !26
  %1787 = load <2 x double>, ptr %1296, align 16, !tbaa !26
  %1788 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1783, <2 x double> %1787, <2 x double> %1786)
  %1789 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1783, <2 x double> %1788, <2 x double> %1785)
  %1790 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1783, <2 x double> %1789, <2 x double> %1784)
  %1791 = load <2 x double>, ptr %1224, align 16, !tbaa !26
  %1792 = load <2 x double>, ptr %1210, align 16, !tbaa !26
  %1793 = load ptr, ptr %1765, align 8, !tbaa !49
  %1794 = getelementptr inbounds nuw <2 x double>, ptr %1793, i64 %1779
  %1795 = load <2 x double>, ptr %1794, align 16, !tbaa !26
  %1796 = fmul <2 x double> %1792, %1795
  %1797 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1791, <2 x double> %1790, <2 x double> %1796)
  %1798 = load <2 x double>, ptr %1214, align 16, !tbaa !26
  %1799 = load ptr, ptr %1766, align 16, !tbaa !59
  %1800 = getelementptr inbounds nuw <2 x double>, ptr %1799, i64 %1779
  %1801 = load <2 x double>, ptr %1800, align 16, !tbaa !26
  %1802 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1798, <2 x double> %1801, <2 x double> %1797)
  %1803 = fmul <2 x double> %1802, splat (double 5.000000e-01)
  %1804 = icmp eq i64 %1778, 1
  br i1 %1804, label %1820, label %1805

1805:                                             ; preds = %1772
  %1806 = load <2 x double>, ptr %1767, align 16, !tbaa !26
  %1807 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1803, <2 x double> %1806, <2 x double> %1768)
  %1808 = load <2 x double>, ptr %1365, align 16, !tbaa !26
  %1809 = fmul <2 x double> %1750, %1808
  %1810 = load <2 x double>, ptr %1311, align 16, !tbaa !26
  %1811 = load <2 x double>, ptr %1313, align 16, !tbaa !26
  %1812 = load <2 x double>, ptr %1315, align 16, !tbaa !26
  %1813 = load <2 x double>, ptr %1317, align 16, !tbaa !26
  %1814 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1783, <2 x double> %1813, <2 x double> %1812)
  %1815 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1783, <2 x double> %1814, <2 x double> %1811)
  %1816 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1783, <2 x double> %1815, <2 x double> %1810)
  %1817 = fmul <2 x double> %1809, %1816
  %1818 = fsub <2 x double> %1817, %1807
  %1819 = fadd <2 x double> %1807, %1817
  br label %1826

1820:                                             ; preds = %1772
  %1821 = load <2 x double>, ptr %1419, align 16, !tbaa !26
  %1822 = load <2 x double>, ptr %1767, align 16, !tbaa !26
  %1823 = fmul <2 x double> %1803, splat (double -2.000000e+00)
  %1824 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1823, <2 x double> %1822, <2 x double> %1821)
  %1825 = fadd <2 x double> %1745, %1824
  br label %1826

1826:                                             ; preds = %1820, %1805
  %1827 = phi <2 x double> [ %1806, %1805 ], [ %1822, %1820 ]
  %1828 = phi <2 x double> [ %1818, %1805 ], [ %1825, %1820 ]
  %1829 = phi <2 x double> [ %1819, %1805 ], [ %1821, %1820 ]
  %1830 = fsub <2 x double> %1777, %1790
  %1831 = fmul <2 x double> %1791, %1830
  %1832 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1831, <2 x double> %1827, <2 x double> %1773)
  %1833 = fadd <2 x double> %1829, %1832
  %1834 = fneg <2 x double> %1774
  %1835 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1834, <2 x double> %1776, <2 x double> %1833)
  %1836 = fdiv <2 x double> splat (double 1.000000e+00), %1835
  %1837 = load ptr, ptr %1756, align 16, !tbaa !75
  %1838 = getelementptr inbounds nuw <2 x double>, ptr %1837, i64 %1779
  store <2 x double> %1790, ptr %1838, align 16, !tbaa !26
  %1839 = load ptr, ptr %1769, align 8, !tbaa !62
  %1840 = getelementptr inbounds nuw <2 x double>, ptr %1839, i64 %1779
  %1841 = load <2 x double>, ptr %1840, align 16, !tbaa !26
  %1842 = fneg <2 x double> %1841
  %1843 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1774, <2 x double> %1775, <2 x double> %1842)
  %1844 = fmul <2 x double> %1836, %1843
  %1845 = load ptr, ptr %1770, align 16, !tbaa !77
  %1846 = getelementptr inbounds nuw <2 x double>, ptr %1845, i64 %1779
  store <2 x double> %1844, ptr %1846, align 16, !tbaa !26
  %1847 = fmul <2 x double> %1828, %1836
  %1848 = load ptr, ptr %1771, align 8, !tbaa !78
  %1849 = getelementptr inbounds nuw <2 x double>, ptr %1848, i64 %1779
  store <2 x double> %1847, ptr %1849, align 16, !tbaa !26
  %1850 = icmp samesign ugt i64 %1778, 1
  br i1 %1850, label %1772, label %1851, !llvm.loop !79

1851:                                             ; preds = %1826, %1740
  %1852 = load <2 x i64>, ptr %1261, align 16, !tbaa !26
  %1853 = load <2 x double>, ptr %1419, align 16, !tbaa !26
  %1854 = getelementptr inbounds nuw i8, ptr %1180, i64 2048
  %1855 = load ptr, ptr %1854, align 16, !tbaa !77
  %1856 = load <2 x double>, ptr %1855, align 16, !tbaa !26
  %1857 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1853, <2 x double> %1856, <2 x double> %1710)
  %1858 = icmp eq <2 x i64> %1852, zeroinitializer
  %1859 = select <2 x i1> %1858, <2 x double> %1717, <2 x double> %1857
  %1860 = getelementptr inbounds nuw i8, ptr %1180, i64 1456
  store <2 x double> %1859, ptr %1860, align 16, !tbaa !26
  %1861 = getelementptr inbounds nuw i8, ptr %1180, i64 2056
  %1862 = load ptr, ptr %1861, align 8, !tbaa !78
  %1863 = load <2 x double>, ptr %1862, align 16, !tbaa !26
  %1864 = fsub <2 x double> splat (double 1.000000e+00), %1863
  %1865 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1853, <2 x double> %1864, <2 x double> %1712)
  %1866 = select <2 x i1> %1858, <2 x double> %1720, <2 x double> %1865
  br label %1867

1867:                                             ; preds = %1731, %1851
  %1868 = phi <2 x double> [ %1720, %1731 ], [ %1866, %1851 ]
  %1869 = getelementptr inbounds nuw i8, ptr %1180, i64 1472
  store <2 x double> %1868, ptr %1869, align 16, !tbaa !26
  %1870 = add nuw nsw i64 %1178, 1
  %1871 = load i64, ptr %169, align 8, !tbaa !20
  %1872 = icmp slt i64 %1870, %1871
  br i1 %1872, label %1177, label %1174, !llvm.loop !80

1873:                                             ; preds = %1973, %1172, %1174
  %1874 = phi <2 x double> [ %1173, %1172 ], [ %1175, %1174 ], [ %1175, %1973 ]
  %1875 = fcmp ogt <2 x double> %1874, zeroinitializer
  %1876 = bitcast <2 x i1> %1875 to i2
  %1877 = icmp eq i2 %1876, 0
  br i1 %1877, label %1980, label %1977

1878:                                             ; preds = %1174, %1973
  %1879 = phi i64 [ %1974, %1973 ], [ %1871, %1174 ]
  %1880 = phi i64 [ %1975, %1973 ], [ 0, %1174 ]
  %1881 = load ptr, ptr %142, align 8, !tbaa !28
  %1882 = getelementptr inbounds nuw %struct.Piece, ptr %1881, i64 %1880
  %1883 = getelementptr inbounds nuw i8, ptr %1882, i64 1872
  %1884 = load <2 x i64>, ptr %1883, align 16, !tbaa !26
  %1885 = getelementptr inbounds nuw i8, ptr %1882, i64 560
  %1886 = load <2 x double>, ptr %1885, align 16, !tbaa !26
  %1887 = fcmp ogt <2 x double> %1886, zeroinitializer
  %1888 = select <2 x i1> %1887, <2 x i64> %1884, <2 x i64> zeroinitializer
  %1889 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1888)
  %1890 = icmp eq i64 %1889, 0
  br i1 %1890, label %1973, label %1891

1891:                                             ; preds = %1878
  %1892 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %1893 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1892, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1894 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1892, <2 x double> %1893, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1895 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %1896 = getelementptr inbounds nuw i8, ptr %1882, i64 1456
  %1897 = load <2 x double>, ptr %1896, align 16, !tbaa !26
  %1898 = getelementptr inbounds nuw i8, ptr %1882, i64 1472
  %1899 = load <2 x double>, ptr %1898, align 16, !tbaa !26
  %1900 = fdiv <2 x double> %1897, %1899
  %1901 = fcmp olt <2 x double> %1900, %1892
  %1902 = select <2 x i1> %1901, <2 x double> %1900, <2 x double> %1892
  %1903 = getelementptr inbounds nuw i8, ptr %1882, i64 880
  %1904 = load <2 x double>, ptr %1903, align 16, !tbaa !26
  %1905 = fcmp olt <2 x double> %1904, %1902
  %1906 = select <2 x i1> %1905, <2 x double> %1904, <2 x double> %1902
  %1907 = fneg <2 x double> %1899
  %1908 = getelementptr inbounds nuw i8, ptr %1882, i64 1776
  %1909 = load <2 x double>, ptr %1908, align 16, !tbaa !26
  br label %1913

1910:                                             ; preds = %1913
  %1911 = getelementptr inbounds nuw i8, ptr %1882, i64 1488
  store <2 x double> %1964, ptr %1911, align 16, !tbaa !26
  %1912 = load i64, ptr %169, align 8, !tbaa !20
  br label %1973

1913:                                             ; preds = %1891, %1913
  %1914 = phi <2 x i64> [ %1888, %1891 ], [ %1967, %1913 ]
  %1915 = phi i32 [ 0, %1891 ], [ %1968, %1913 ]
  %1916 = phi <2 x double> [ %1906, %1891 ], [ %1964, %1913 ]
  %1917 = fadd <2 x double> %1916, splat (double 2.731500e+02)
  %1918 = fcmp ogt <2 x double> %1916, zeroinitializer
  %1919 = select <2 x i1> %1918, <2 x double> %1916, <2 x double> zeroinitializer
  %1920 = fadd <2 x double> %1919, splat (double 2.731500e+02)
  %1921 = fadd <2 x double> %1920, splat (double 0xC08451671D164BD4)
  %1922 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %1921
  %1923 = fsub <2 x double> %1920, %1922
  %1924 = fadd <2 x double> %1923, splat (double 0x40923C3565924845)
  %1925 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1923, <2 x double> %1924, <2 x double> splat (double 0xC12619EA558539E6))
  %1926 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1923, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %1927 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1923, <2 x double> %1926, <2 x double> splat (double 0xC148A99584203885))
  %1928 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1923, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %1929 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1923, <2 x double> %1928, <2 x double> splat (double 0x4118B9E59F2691E5))
  %1930 = fmul <2 x double> %1929, splat (double 2.000000e+00)
  %1931 = fmul <2 x double> %1925, splat (double 4.000000e+00)
  %1932 = fneg <2 x double> %1929
  %1933 = fmul <2 x double> %1931, %1932
  %1934 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1927, <2 x double> %1927, <2 x double> %1933)
  %1935 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1934)
  %1936 = fsub <2 x double> %1935, %1927
  %1937 = fdiv <2 x double> %1930, %1936
  %1938 = fmul <2 x double> %1937, %1937
  %1939 = fmul <2 x double> %1938, splat (double 1.000000e+06)
  %1940 = fmul <2 x double> %1938, %1939
  %1941 = fmul <2 x double> %1917, splat (double 4.615260e+02)
  %1942 = fdiv <2 x double> %1940, %1941
  %1943 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1907, <2 x double> %1916, <2 x double> %1897)
  %1944 = fsub <2 x double> %1942, %1895
  %1945 = fcmp ogt <2 x double> %1944, zeroinitializer
  %1946 = select <2 x i1> %1945, <2 x double> %1944, <2 x double> zeroinitializer
  %1947 = fmul <2 x double> %1894, %1946
  %1948 = fdiv <2 x double> %1947, %1909
  %1949 = fsub <2 x double> %1943, %1948
  %1950 = fmul <2 x double> %1894, %1942
  %1951 = fdiv <2 x double> %1894, %1941
  %1952 = fadd <2 x double> %1951, splat (double -1.000000e+00)
  %1953 = fmul <2 x double> %1952, %1950
  %1954 = fdiv <2 x double> %1953, %1917
  %1955 = fdiv <2 x double> %1954, %1909
  %1956 = fcmp ule <2 x double> %1942, %1895
  %1957 = select <2 x i1> %1956, <2 x double> zeroinitializer, <2 x double> %1955
  %1958 = fsub <2 x double> %1907, %1957
  %1959 = fdiv <2 x double> %1949, %1958
  %1960 = fsub <2 x double> %1916, %1959
  %1961 = fcmp olt <2 x double> %1960, %1902
  %1962 = select <2 x i1> %1961, <2 x double> %1960, <2 x double> %1902
  %1963 = icmp eq <2 x i64> %1914, zeroinitializer
  %1964 = select <2 x i1> %1963, <2 x double> %1916, <2 x double> %1962
  %1965 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1959)
  %1966 = fcmp oge <2 x double> %1965, splat (double 1.000000e-05)
  %1967 = select <2 x i1> %1966, <2 x i64> %1914, <2 x i64> zeroinitializer
  %1968 = add nuw nsw i32 %1915, 1
  %1969 = icmp samesign ult i32 %1915, 7
  %1970 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1967)
  %1971 = icmp ne i64 %1970, 0
  %1972 = select i1 %1969, i1 %1971, i1 false
  br i1 %1972, label %1913, label %1910, !llvm.loop !81

1973:                                             ; preds = %1878, %1910
  %1974 = phi i64 [ %1879, %1878 ], [ %1912, %1910 ]
  %1975 = add nuw nsw i64 %1880, 1
  %1976 = icmp slt i64 %1975, %1974
  br i1 %1976, label %1878, label %1873, !llvm.loop !82

1977:                                             ; preds = %1873
  %1978 = sext <2 x i1> %1875 to <2 x i64>
  %1979 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, <2 x i64> noundef %1978) #7
  br label %1980

1980:                                             ; preds = %1873, %1977
  %1981 = phi <2 x double> [ %1979, %1977 ], [ zeroinitializer, %1873 ]
  %1982 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %1983 = fcmp ogt <2 x double> %1982, zeroinitializer
  %1984 = sext <2 x i1> %1983 to <2 x i64>
  %1985 = xor <2 x i64> %1984, splat (i64 -1)
  %1986 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %1987 = fcmp oeq <2 x double> %1986, splat (double 1.000000e+00)
  %1988 = fcmp oeq <2 x double> %1986, splat (double 2.000000e+00)
  %1989 = or <2 x i1> %1987, %1988
  %1990 = select <2 x i1> %1989, <2 x i64> %1985, <2 x i64> zeroinitializer
  %1991 = xor <2 x i64> %1990, %1984
  %1992 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %1993 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %1994 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %1995 = icmp eq <2 x i64> %1991, splat (i64 -1)
  %1996 = select <2 x i1> %1995, <2 x double> %1994, <2 x double> %1993
  %1997 = bitcast <2 x i1> %1983 to i2
  %1998 = icmp eq i2 %1997, 0
  br i1 %1998, label %2030, label %1999

1999:                                             ; preds = %1980
  %2000 = select <2 x i1> %1983, <2 x double> %1981, <2 x double> %1996
  %2001 = fmul <2 x double> %2000, splat (double 0x3EB0C6F7A0B5ED8D)
  %2002 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2001)
  %2003 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2002)
  %2004 = fmul <2 x double> %2003, %2003
  %2005 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2003, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2004)
  %2006 = fadd <2 x double> %2005, splat (double 0x402DD4891DBECC6B)
  %2007 = fmul <2 x double> %2003, splat (double 0x40C77A698FD9BCCA)
  %2008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2004, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2007)
  %2009 = fadd <2 x double> %2008, splat (double 0xC0B2D7440748F0B3)
  %2010 = fmul <2 x double> %2003, splat (double 0xC148A99584203885)
  %2011 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2004, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2010)
  %2012 = fadd <2 x double> %2011, splat (double 0x4118B9E59F2691E5)
  %2013 = fmul <2 x double> %2012, splat (double 2.000000e+00)
  %2014 = fneg <2 x double> %2009
  %2015 = fmul <2 x double> %2006, splat (double 4.000000e+00)
  %2016 = fneg <2 x double> %2012
  %2017 = fmul <2 x double> %2015, %2016
  %2018 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2009, <2 x double> %2009, <2 x double> %2017)
  %2019 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2018)
  %2020 = fsub <2 x double> %2014, %2019
  %2021 = fdiv <2 x double> %2013, %2020
  %2022 = fadd <2 x double> %2021, splat (double 0x408451671D164BD4)
  %2023 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2021, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2024 = fmul <2 x double> %2023, splat (double -4.000000e+00)
  %2025 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2022, <2 x double> %2022, <2 x double> %2024)
  %2026 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2025)
  %2027 = fsub <2 x double> %2022, %2026
  %2028 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2027, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2029 = select <2 x i1> %1983, <2 x double> %2028, <2 x double> %1992
  br label %2030

2030:                                             ; preds = %1999, %1980
  %2031 = phi <2 x double> [ %2000, %1999 ], [ %1996, %1980 ]
  %2032 = phi <2 x double> [ %2029, %1999 ], [ %1992, %1980 ]
  %2033 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %2034 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %2035 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %2036 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %2037 = fmul <2 x double> %2035, %2036
  %2038 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2033, <2 x double> %2034, <2 x double> %2037)
  %2039 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %2040 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %2041 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %2042 = fneg <2 x double> %2038
  %2043 = fmul <2 x double> %2041, %2042
  %2044 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2039, <2 x double> %2040, <2 x double> %2043)
  %2045 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %2046 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2041, <2 x double> %2045, <2 x double> %2039)
  %2047 = fdiv <2 x double> %2044, %2046
  %2048 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2049 = select <2 x i1> %1995, <2 x double> %2048, <2 x double> %1993
  store <2 x double> %2049, ptr %194, align 16, !tbaa !26
  %2050 = load <2 x double>, ptr %195, align 16, !tbaa !26
  %2051 = select <2 x i1> %1995, <2 x double> %2050, <2 x double> %2047
  store <2 x double> %2051, ptr %195, align 16, !tbaa !26
  store <2 x double> %2031, ptr %188, align 16, !tbaa !26
  %2052 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %2053 = and <2 x i64> %2052, %1990
  %2054 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2053)
  %2055 = icmp eq i64 %2054, 0
  br i1 %2055, label %2522, label %2056

2056:                                             ; preds = %2030
  %2057 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %2058 = load <2 x double>, ptr %197, align 16, !tbaa !26
  %2059 = fmul <2 x double> %2035, %2058
  %2060 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2033, <2 x double> %2057, <2 x double> %2059)
  %2061 = load <2 x double>, ptr %198, align 16, !tbaa !26
  %2062 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2063 = fdiv <2 x double> %2061, %2062
  %2064 = fmul <2 x double> %1993, splat (double 3.000000e-01)
  %2065 = load <2 x double>, ptr %200, align 16, !tbaa !26
  %2066 = fadd <2 x double> %1993, %2065
  %2067 = fadd <2 x double> %2066, splat (double 2.000000e+05)
  %2068 = fmul <2 x double> %2062, splat (double 2.870530e+02)
  %2069 = fdiv <2 x double> %1993, %2068
  %2070 = fcmp ogt <2 x double> %2031, %2064
  %2071 = select <2 x i1> %2070, <2 x double> %2031, <2 x double> %2064
  %2072 = fcmp olt <2 x double> %2071, %2067
  %2073 = select <2 x i1> %2072, <2 x double> %2071, <2 x double> %2067
  %2074 = icmp eq <2 x i64> %1990, zeroinitializer
  %2075 = select <2 x i1> %2074, <2 x double> %2031, <2 x double> %2073
  %2076 = fdiv <2 x double> %2049, splat (double 2.870530e+02)
  %2077 = fmul <2 x double> %2069, splat (double 2.000000e+00)
  %2078 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2077)
  br label %2079

2079:                                             ; preds = %2308, %2056
  %2080 = phi <2 x double> [ %2032, %2056 ], [ %2114, %2308 ]
  %2081 = phi <2 x double> [ %2064, %2056 ], [ %2465, %2308 ]
  %2082 = phi <2 x double> [ %2067, %2056 ], [ %2462, %2308 ]
  %2083 = phi <2 x i64> [ %2053, %2056 ], [ %2477, %2308 ]
  %2084 = phi i32 [ 0, %2056 ], [ %2482, %2308 ]
  %2085 = phi <2 x double> [ %2075, %2056 ], [ %2479, %2308 ]
  %2086 = fmul <2 x double> %2085, splat (double 0x3EB0C6F7A0B5ED8D)
  %2087 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2086)
  %2088 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2087)
  %2089 = fmul <2 x double> %2088, %2088
  %2090 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2088, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2089)
  %2091 = fadd <2 x double> %2090, splat (double 0x402DD4891DBECC6B)
  %2092 = fmul <2 x double> %2088, splat (double 0x40C77A698FD9BCCA)
  %2093 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2089, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2092)
  %2094 = fadd <2 x double> %2093, splat (double 0xC0B2D7440748F0B3)
  %2095 = fmul <2 x double> %2088, splat (double 0xC148A99584203885)
  %2096 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2089, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2095)
  %2097 = fadd <2 x double> %2096, splat (double 0x4118B9E59F2691E5)
  %2098 = fmul <2 x double> %2097, splat (double 2.000000e+00)
  %2099 = fneg <2 x double> %2094
  %2100 = fmul <2 x double> %2091, splat (double 4.000000e+00)
  %2101 = fneg <2 x double> %2097
  %2102 = fmul <2 x double> %2100, %2101
  %2103 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2094, <2 x double> %2094, <2 x double> %2102)
  %2104 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2103)
  %2105 = fsub <2 x double> %2099, %2104
  %2106 = fdiv <2 x double> %2098, %2105
  %2107 = fadd <2 x double> %2106, splat (double 0x408451671D164BD4)
  %2108 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2106, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2109 = fmul <2 x double> %2108, splat (double -4.000000e+00)
  %2110 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2107, <2 x double> %2107, <2 x double> %2109)
  %2111 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2110)
  %2112 = fsub <2 x double> %2107, %2111
  %2113 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2112, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2114 = select <2 x i1> %2074, <2 x double> %2080, <2 x double> %2113
  %2115 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2114, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2116 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2114, <2 x double> %2115, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2117 = load i64, ptr %169, align 8, !tbaa !20, !noalias !83
  %2118 = icmp sgt i64 %2117, 0
  br i1 %2118, label %2119, label %2308

2119:                                             ; preds = %2079
  %2120 = fdiv <2 x double> splat (double 1.000000e+00), %2116
  %2121 = fadd <2 x double> %2114, splat (double 1.000000e-09)
  br label %2122

2122:                                             ; preds = %2119, %2232
  %2123 = phi <2 x double> [ zeroinitializer, %2119 ], [ %2304, %2232 ]
  %2124 = phi <2 x double> [ zeroinitializer, %2119 ], [ %2303, %2232 ]
  %2125 = phi i64 [ 0, %2119 ], [ %2305, %2232 ]
  %2126 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !83
  %2127 = getelementptr inbounds nuw %struct.Piece, ptr %2126, i64 %2125
  %2128 = getelementptr inbounds nuw i8, ptr %2127, i64 1456
  %2129 = load <2 x double>, ptr %2128, align 16, !tbaa !26, !noalias !83
  %2130 = getelementptr inbounds nuw i8, ptr %2127, i64 1472
  %2131 = load <2 x double>, ptr %2130, align 16, !tbaa !26, !noalias !83
  %2132 = getelementptr inbounds nuw i8, ptr %2127, i64 1824
  %2133 = load <2 x double>, ptr %2132, align 16, !tbaa !26, !noalias !83
  %2134 = fcmp ule <2 x double> %2133, splat (double 1.000000e+00)
  %2135 = fmul <2 x double> %2114, %2131
  %2136 = fcmp ogt <2 x double> %2129, %2135
  %2137 = and <2 x i1> %2134, %2136
  %2138 = fneg <2 x double> %2131
  %2139 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2138, <2 x double> %2114, <2 x double> %2129)
  %2140 = fmul <2 x double> %2120, %2139
  %2141 = select <2 x i1> %2137, <2 x double> %2140, <2 x double> zeroinitializer
  %2142 = fmul <2 x double> %2120, %2138
  %2143 = fdiv <2 x double> %2129, %2131
  %2144 = select <2 x i1> %2137, <2 x double> %2114, <2 x double> %2143
  %2145 = getelementptr inbounds nuw i8, ptr %2127, i64 1872
  %2146 = load <2 x i64>, ptr %2145, align 16, !tbaa !26, !noalias !83
  %2147 = getelementptr inbounds nuw i8, ptr %2127, i64 560
  %2148 = load <2 x double>, ptr %2147, align 16, !tbaa !26, !noalias !83
  %2149 = fcmp ule <2 x double> %2148, zeroinitializer
  %2150 = xor <2 x i1> %2134, splat (i1 true)
  %2151 = select <2 x i1> %2150, <2 x i1> splat (i1 true), <2 x i1> %2149
  %2152 = getelementptr inbounds nuw i8, ptr %2127, i64 1488
  %2153 = load <2 x double>, ptr %2152, align 16, !tbaa !26, !noalias !83
  %2154 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2138, <2 x double> %2153, <2 x double> %2129)
  %2155 = fcmp ogt <2 x double> %2154, zeroinitializer
  %2156 = select <2 x i1> %2155, <2 x double> %2154, <2 x double> zeroinitializer
  %2157 = fmul <2 x double> %2120, %2156
  %2158 = icmp eq <2 x i64> %2146, zeroinitializer
  %2159 = select <2 x i1> %2151, <2 x i1> splat (i1 true), <2 x i1> %2158
  %2160 = select <2 x i1> %2159, <2 x double> %2141, <2 x double> %2157
  %2161 = select <2 x i1> %2159, <2 x double> %2144, <2 x double> %2153
  %2162 = select <2 x i1> %2159, <2 x i1> %2137, <2 x i1> zeroinitializer
  %2163 = select <2 x i1> %2162, <2 x double> %2142, <2 x double> zeroinitializer
  %2164 = load i64, ptr %132, align 16, !tbaa !21, !noalias !86
  %2165 = sitofp i64 %2164 to double
  %2166 = insertelement <2 x double> poison, double %2165, i64 0
  %2167 = shufflevector <2 x double> %2166, <2 x double> poison, <2 x i32> zeroinitializer
  %2168 = icmp sgt i64 %2164, 0
  br i1 %2168, label %2169, label %2232

2169:                                             ; preds = %2122
  %2170 = getelementptr inbounds nuw i8, ptr %2127, i64 1944
  %2171 = load ptr, ptr %2170, align 8, !tbaa !71, !noalias !86
  %2172 = getelementptr inbounds nuw i8, ptr %2127, i64 1952
  %2173 = load ptr, ptr %2172, align 16, !tbaa !72, !noalias !86
  %2174 = getelementptr inbounds nuw i8, ptr %2127, i64 1888
  %2175 = load i64, ptr %2174, align 16, !tbaa !31, !noalias !86
  %2176 = getelementptr inbounds nuw i8, ptr %2127, i64 1968
  %2177 = getelementptr inbounds nuw i8, ptr %2127, i64 1960
  %2178 = getelementptr inbounds nuw i8, ptr %2127, i64 1976
  br label %2179

2179:                                             ; preds = %2169, %2214
  %2180 = phi <2 x i64> [ splat (i64 -1), %2169 ], [ %2194, %2214 ]
  %2181 = phi i64 [ %2164, %2169 ], [ %2185, %2214 ]
  %2182 = phi <2 x double> [ %2167, %2169 ], [ %2230, %2214 ]
  %2183 = phi <2 x double> [ zeroinitializer, %2169 ], [ %2226, %2214 ]
  %2184 = phi <2 x double> [ zeroinitializer, %2169 ], [ %2224, %2214 ]
  %2185 = add nsw i64 %2181, -1
  %2186 = getelementptr inbounds nuw <2 x double>, ptr %2171, i64 %2185
  %2187 = load <2 x double>, ptr %2186, align 16, !tbaa !26, !noalias !86
  %2188 = getelementptr inbounds nuw <2 x double>, ptr %2173, i64 %2185
  %2189 = load <2 x double>, ptr %2188, align 16, !tbaa !26, !noalias !86
  %2190 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2189, <2 x double> %2114, <2 x double> %2187)
  %2191 = fcmp ogt <2 x double> %2190, %2121
  %2192 = select <2 x i1> %2191, <2 x i64> %2180, <2 x i64> zeroinitializer
  %2193 = icmp sgt i64 %2181, %2175
  %2194 = select i1 %2193, <2 x i64> %2192, <2 x i64> zeroinitializer
  %2195 = icmp slt i64 %2181, %2164
  br i1 %2195, label %2196, label %2209

2196:                                             ; preds = %2179
  %2197 = load ptr, ptr %2176, align 16, !tbaa !69, !noalias !86
  %2198 = getelementptr inbounds nuw <2 x double>, ptr %2197, i64 %2181
  %2199 = load <2 x double>, ptr %2198, align 16, !tbaa !26, !noalias !86
  %2200 = fsub <2 x double> %2190, %2114
  %2201 = fmul <2 x double> %2200, %2199
  %2202 = icmp eq <2 x i64> %2194, %2180
  %2203 = select <2 x i1> %2202, <2 x double> zeroinitializer, <2 x double> %2201
  %2204 = fadd <2 x double> %2184, %2203
  %2205 = fadd <2 x double> %2189, splat (double -1.000000e+00)
  %2206 = fmul <2 x double> %2205, %2199
  %2207 = select <2 x i1> %2202, <2 x double> zeroinitializer, <2 x double> %2206
  %2208 = fadd <2 x double> %2183, %2207
  br label %2209

2209:                                             ; preds = %2196, %2179
  %2210 = phi <2 x double> [ %2204, %2196 ], [ %2184, %2179 ]
  %2211 = phi <2 x double> [ %2208, %2196 ], [ %2183, %2179 ]
  %2212 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2194)
  %2213 = icmp eq i64 %2212, 0
  br i1 %2213, label %2232, label %2214

2214:                                             ; preds = %2209
  %2215 = load ptr, ptr %2177, align 8, !tbaa !68, !noalias !86
  %2216 = getelementptr inbounds nuw <2 x double>, ptr %2215, i64 %2185
  %2217 = load <2 x double>, ptr %2216, align 16, !tbaa !26, !noalias !86
  %2218 = load ptr, ptr %2178, align 8, !tbaa !70, !noalias !86
  %2219 = getelementptr inbounds nuw <2 x double>, ptr %2218, i64 %2185
  %2220 = load <2 x double>, ptr %2219, align 16, !tbaa !26, !noalias !86
  %2221 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2220, <2 x double> %2114, <2 x double> %2217)
  %2222 = icmp eq <2 x i64> %2194, zeroinitializer
  %2223 = select <2 x i1> %2222, <2 x double> zeroinitializer, <2 x double> %2221
  %2224 = fadd <2 x double> %2210, %2223
  %2225 = select <2 x i1> %2222, <2 x double> zeroinitializer, <2 x double> %2220
  %2226 = fadd <2 x double> %2211, %2225
  %2227 = uitofp nneg i64 %2185 to double
  %2228 = insertelement <2 x double> poison, double %2227, i64 0
  %2229 = shufflevector <2 x double> %2228, <2 x double> poison, <2 x i32> zeroinitializer
  %2230 = select <2 x i1> %2222, <2 x double> %2182, <2 x double> %2229
  %2231 = icmp samesign ugt i64 %2181, 1
  br i1 %2231, label %2179, label %2232, !llvm.loop !89

2232:                                             ; preds = %2214, %2209, %2122
  %2233 = phi <2 x double> [ %2167, %2122 ], [ %2182, %2209 ], [ %2230, %2214 ]
  %2234 = phi <2 x double> [ zeroinitializer, %2122 ], [ %2210, %2209 ], [ %2224, %2214 ]
  %2235 = phi <2 x double> [ zeroinitializer, %2122 ], [ %2211, %2209 ], [ %2226, %2214 ]
  %2236 = getelementptr inbounds nuw i8, ptr %2127, i64 1520
  %2237 = load <2 x double>, ptr %2236, align 16, !tbaa !26, !noalias !83
  %2238 = getelementptr inbounds nuw i8, ptr %2127, i64 1376
  %2239 = load <2 x double>, ptr %2238, align 16, !tbaa !26, !noalias !83
  %2240 = getelementptr inbounds nuw i8, ptr %2127, i64 1760
  %2241 = load <2 x double>, ptr %2240, align 16, !tbaa !26, !noalias !83
  %2242 = fneg <2 x double> %2241
  %2243 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2237, <2 x double> %2239, <2 x double> %2242)
  %2244 = getelementptr inbounds nuw i8, ptr %2127, i64 1744
  %2245 = load <2 x double>, ptr %2244, align 16, !tbaa !26, !noalias !83
  %2246 = fadd <2 x double> %2237, %2245
  %2247 = getelementptr inbounds nuw i8, ptr %2127, i64 1840
  %2248 = load <2 x i64>, ptr %2247, align 16, !tbaa !26, !noalias !83
  %2249 = getelementptr inbounds nuw i8, ptr %2127, i64 2048
  %2250 = load ptr, ptr %2249, align 16, !tbaa !77, !noalias !83
  %2251 = load <2 x double>, ptr %2250, align 16, !tbaa !26, !noalias !83
  %2252 = fmul <2 x double> %2237, %2251
  %2253 = icmp eq <2 x i64> %2248, zeroinitializer
  %2254 = select <2 x i1> %2253, <2 x double> %2243, <2 x double> %2252
  %2255 = getelementptr inbounds nuw i8, ptr %2127, i64 2056
  %2256 = load ptr, ptr %2255, align 8, !tbaa !78, !noalias !83
  %2257 = load <2 x double>, ptr %2256, align 16, !tbaa !26, !noalias !83
  %2258 = fsub <2 x double> splat (double 1.000000e+00), %2257
  %2259 = fmul <2 x double> %2237, %2258
  %2260 = select <2 x i1> %2253, <2 x double> %2246, <2 x double> %2259
  %2261 = fneg <2 x double> %2260
  %2262 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2261, <2 x double> %2114, <2 x double> %2254)
  %2263 = fcmp olt <2 x double> %2233, %2167
  %2264 = and <2 x i1> %2134, %2263
  %2265 = fcmp ogt <2 x double> %2234, zeroinitializer
  %2266 = fcmp oge <2 x double> %2262, zeroinitializer
  %2267 = and <2 x i1> %2265, %2266
  %2268 = and <2 x i1> %2264, %2267
  %2269 = sext <2 x i1> %2268 to <2 x i64>
  %2270 = xor <2 x i64> %2269, splat (i64 -1)
  %2271 = fadd <2 x double> %2234, %2262
  %2272 = fcmp ogt <2 x double> %2271, zeroinitializer
  %2273 = and <2 x i1> %2264, %2272
  %2274 = select <2 x i1> %2273, <2 x i64> %2270, <2 x i64> zeroinitializer
  %2275 = or <2 x i64> %2274, %2269
  %2276 = fmul <2 x double> %2120, %2262
  %2277 = select <2 x i1> %2268, <2 x double> %2276, <2 x double> zeroinitializer
  %2278 = icmp eq <2 x i64> %2275, zeroinitializer
  %2279 = select <2 x i1> %2278, <2 x double> %2160, <2 x double> %2277
  %2280 = select <2 x i1> %2278, <2 x double> %2161, <2 x double> %2114
  %2281 = fsub <2 x double> %2235, %2260
  %2282 = fmul <2 x double> %2120, %2281
  %2283 = select <2 x i1> %2278, <2 x double> %2163, <2 x double> %2282
  %2284 = getelementptr inbounds nuw i8, ptr %2127, i64 1408
  store <2 x double> %2279, ptr %2284, align 16, !tbaa !26, !noalias !83
  %2285 = getelementptr inbounds nuw i8, ptr %2127, i64 1392
  store <2 x double> %2280, ptr %2285, align 16, !tbaa !26, !noalias !83
  %2286 = fmul <2 x double> %2120, %2234
  %2287 = fmul <2 x double> %2120, %2271
  %2288 = icmp eq <2 x i64> %2274, zeroinitializer
  %2289 = select <2 x i1> %2288, <2 x double> zeroinitializer, <2 x double> %2287
  %2290 = select <2 x i1> %2268, <2 x double> %2286, <2 x double> %2289
  %2291 = getelementptr inbounds nuw i8, ptr %2127, i64 1424
  store <2 x double> %2290, ptr %2291, align 16, !tbaa !26, !noalias !83
  %2292 = load i64, ptr %132, align 16, !tbaa !21, !noalias !83
  %2293 = sitofp i64 %2292 to double
  %2294 = insertelement <2 x double> poison, double %2293, i64 0
  %2295 = shufflevector <2 x double> %2294, <2 x double> poison, <2 x i32> zeroinitializer
  %2296 = select <2 x i1> %2278, <2 x double> %2295, <2 x double> %2233
  %2297 = getelementptr inbounds nuw i8, ptr %2127, i64 1440
  store <2 x double> %2296, ptr %2297, align 16, !tbaa !26, !noalias !83
  %2298 = getelementptr inbounds nuw i8, ptr %2127, i64 32
  %2299 = load <2 x double>, ptr %2298, align 16, !tbaa !26, !noalias !83
  %2300 = fadd <2 x double> %2279, %2290
  %2301 = fmul <2 x double> %2299, %2300
  %2302 = fmul <2 x double> %2299, %2283
  %2303 = fadd <2 x double> %2124, %2301
  %2304 = fadd <2 x double> %2123, %2302
  %2305 = add nuw nsw i64 %2125, 1
  %2306 = load i64, ptr %169, align 8, !tbaa !20, !noalias !83
  %2307 = icmp slt i64 %2305, %2306
  br i1 %2307, label %2122, label %2308, !llvm.loop !90

2308:                                             ; preds = %2232, %2079
  %2309 = phi <2 x double> [ zeroinitializer, %2079 ], [ %2303, %2232 ]
  %2310 = phi <2 x double> [ zeroinitializer, %2079 ], [ %2304, %2232 ]
  %2311 = fsub <2 x double> %2085, %2049
  %2312 = fcmp ogt <2 x double> %2311, zeroinitializer
  %2313 = select <2 x i1> %2312, <2 x double> %2311, <2 x double> zeroinitializer
  %2314 = fadd <2 x double> %2114, splat (double 2.731500e+02)
  %2315 = fdiv <2 x double> %2313, splat (double 4.615260e+02)
  %2316 = fadd <2 x double> %2076, %2315
  %2317 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2318 = fdiv <2 x double> %2316, %2317
  %2319 = fmul <2 x double> %2317, %2318
  %2320 = fdiv <2 x double> %2085, %2319
  %2321 = load <2 x double>, ptr %187, align 16, !tbaa !26, !noalias !91
  %2322 = fsub <2 x double> %2085, %2321
  %2323 = load <2 x double>, ptr %200, align 16, !tbaa !26, !noalias !91
  %2324 = fsub <2 x double> %2322, %2323
  %2325 = load <2 x double>, ptr %201, align 16, !tbaa !26, !noalias !91
  %2326 = load <2 x double>, ptr %151, align 16, !tbaa !26, !noalias !91
  %2327 = fcmp une <2 x double> %2326, splat (double 2.000000e+00)
  %2328 = load <2 x double>, ptr %202, align 16, !tbaa !26, !noalias !91
  %2329 = select <2 x i1> %2327, <2 x double> zeroinitializer, <2 x double> %2328
  %2330 = fadd <2 x double> %2325, %2329
  %2331 = fcmp ule <2 x double> %2322, zeroinitializer
  %2332 = fcmp ule <2 x double> %2330, zeroinitializer
  %2333 = or <2 x i1> %2331, %2332
  %2334 = fmul <2 x double> %2318, splat (double 2.000000e+00)
  %2335 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2334)
  %2336 = fmul <2 x double> %2335, %2330
  %2337 = fadd <2 x double> %2322, splat (double 2.000000e+02)
  %2338 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2337)
  %2339 = select <2 x i1> %2331, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2338
  %2340 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2322, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2341 = fmul <2 x double> %2340, %2336
  %2342 = fmul <2 x double> %2339, %2339
  %2343 = fmul <2 x double> %2339, %2342
  %2344 = fdiv <2 x double> %2341, %2343
  %2345 = fmul <2 x double> %2322, %2336
  %2346 = fdiv <2 x double> %2345, %2339
  %2347 = select <2 x i1> %2333, <2 x double> zeroinitializer, <2 x double> %2346
  %2348 = select <2 x i1> %2333, <2 x double> zeroinitializer, <2 x double> %2344
  %2349 = fcmp ule <2 x double> %2324, zeroinitializer
  %2350 = load <2 x double>, ptr %203, align 16, !tbaa !26, !noalias !91
  %2351 = fmul <2 x double> %2324, %2350
  %2352 = select <2 x i1> %2349, <2 x double> zeroinitializer, <2 x double> %2351
  %2353 = fadd <2 x double> %2352, %2347
  %2354 = select <2 x i1> %2349, <2 x double> zeroinitializer, <2 x double> %2350
  %2355 = fadd <2 x double> %2354, %2348
  %2356 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %2357 = fsub <2 x double> %2321, %2085
  %2358 = fcmp ule <2 x double> %2357, zeroinitializer
  %2359 = fcmp ule <2 x double> %2356, zeroinitializer
  %2360 = or <2 x i1> %2358, %2359
  %2361 = fmul <2 x double> %2078, %2356
  %2362 = fadd <2 x double> %2357, splat (double 2.000000e+02)
  %2363 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2362)
  %2364 = select <2 x i1> %2358, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2363
  %2365 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2357, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2366 = fmul <2 x double> %2365, %2361
  %2367 = fmul <2 x double> %2364, %2364
  %2368 = fmul <2 x double> %2364, %2367
  %2369 = fdiv <2 x double> %2366, %2368
  %2370 = fmul <2 x double> %2357, %2361
  %2371 = fdiv <2 x double> %2370, %2364
  %2372 = load <2 x double>, ptr %176, align 16, !tbaa !26, !noalias !94
  %2373 = load <2 x double>, ptr %189, align 16, !tbaa !26, !noalias !94
  %2374 = load <2 x double>, ptr %177, align 16, !tbaa !26, !noalias !94
  %2375 = load <2 x double>, ptr %190, align 16, !tbaa !26, !noalias !94
  %2376 = fmul <2 x double> %2374, %2375
  %2377 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2372, <2 x double> %2373, <2 x double> %2376)
  %2378 = load <2 x double>, ptr %193, align 16, !tbaa !26, !noalias !94
  %2379 = load <2 x double>, ptr %175, align 16, !tbaa !26, !noalias !94
  %2380 = load <2 x double>, ptr %191, align 16, !tbaa !26, !noalias !94
  %2381 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2378, <2 x double> %2379, <2 x double> %2380)
  %2382 = load <2 x double>, ptr %192, align 16, !tbaa !26, !noalias !94
  %2383 = fneg <2 x double> %2377
  %2384 = fmul <2 x double> %2378, %2383
  %2385 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2380, <2 x double> %2382, <2 x double> %2384)
  %2386 = fdiv <2 x double> %2385, %2381
  %2387 = fcmp ogt <2 x double> %2313, splat (double 2.000000e+03)
  %2388 = select <2 x i1> %2387, <2 x double> %2313, <2 x double> splat (double 2.000000e+03)
  %2389 = fmul <2 x double> %2388, splat (double 0x3EB0C6F7A0B5ED8D)
  %2390 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2389)
  %2391 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2390)
  %2392 = fmul <2 x double> %2391, %2391
  %2393 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2391, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2392)
  %2394 = fadd <2 x double> %2393, splat (double 0x402DD4891DBECC6B)
  %2395 = fmul <2 x double> %2391, splat (double 0x40C77A698FD9BCCA)
  %2396 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2392, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2395)
  %2397 = fadd <2 x double> %2396, splat (double 0xC0B2D7440748F0B3)
  %2398 = fmul <2 x double> %2391, splat (double 0xC148A99584203885)
  %2399 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2392, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2398)
  %2400 = fadd <2 x double> %2399, splat (double 0x4118B9E59F2691E5)
  %2401 = fmul <2 x double> %2400, splat (double 2.000000e+00)
  %2402 = fneg <2 x double> %2397
  %2403 = fmul <2 x double> %2394, splat (double 4.000000e+00)
  %2404 = fneg <2 x double> %2400
  %2405 = fmul <2 x double> %2403, %2404
  %2406 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2397, <2 x double> %2397, <2 x double> %2405)
  %2407 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2406)
  %2408 = fsub <2 x double> %2402, %2407
  %2409 = fdiv <2 x double> %2401, %2408
  %2410 = fadd <2 x double> %2409, splat (double 0x408451671D164BD4)
  %2411 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2409, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2412 = fmul <2 x double> %2411, splat (double -4.000000e+00)
  %2413 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2410, <2 x double> %2410, <2 x double> %2412)
  %2414 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2413)
  %2415 = fsub <2 x double> %2410, %2414
  %2416 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2415, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2417 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2416, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2418 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2416, <2 x double> %2417, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2419 = fadd <2 x double> %2416, splat (double 2.731500e+02)
  %2420 = fcmp ule <2 x double> %2416, %2386
  %2421 = load <2 x double>, ptr %205, align 16, !tbaa !26, !noalias !94
  %2422 = fmul <2 x double> %2381, %2421
  %2423 = fadd <2 x double> %2381, %2421
  %2424 = fdiv <2 x double> %2422, %2423
  %2425 = fdiv <2 x double> %2424, %2418
  %2426 = fmul <2 x double> %2419, splat (double 4.615260e+02)
  %2427 = fmul <2 x double> %2388, %2418
  %2428 = fmul <2 x double> %2416, %2421
  %2429 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2386, <2 x double> %2381, <2 x double> %2428)
  %2430 = fdiv <2 x double> %2429, %2423
  %2431 = select <2 x i1> %2420, <2 x double> %2386, <2 x double> %2430
  store <2 x double> %2431, ptr %195, align 16, !tbaa !26, !noalias !94
  %2432 = fsub <2 x double> %2416, %2386
  %2433 = fmul <2 x double> %2432, %2425
  %2434 = select <2 x i1> %2420, <2 x double> zeroinitializer, <2 x double> %2433
  %2435 = fmul <2 x double> %2314, splat (double 4.615260e+02)
  %2436 = fmul <2 x double> %2314, %2435
  %2437 = fmul <2 x double> %2085, %2116
  %2438 = fdiv <2 x double> %2436, %2437
  %2439 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2379, <2 x double> %2085, <2 x double> %2060)
  %2440 = fsub <2 x double> %2309, %2434
  %2441 = fmul <2 x double> %2440, splat (double -4.615260e+02)
  %2442 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2063, <2 x double> %2439, <2 x double> %2441)
  %2443 = fmul <2 x double> %2371, splat (double -2.870530e+02)
  %2444 = select <2 x i1> %2360, <2 x double> splat (double -0.000000e+00), <2 x double> %2443
  %2445 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2320, <2 x double> %2353, <2 x double> %2444)
  %2446 = fadd <2 x double> %2445, %2442
  %2447 = fneg <2 x double> %2419
  %2448 = fmul <2 x double> %2426, %2447
  %2449 = fdiv <2 x double> %2448, %2427
  %2450 = fmul <2 x double> %2449, %2425
  %2451 = select <2 x i1> %2420, <2 x double> splat (double -0.000000e+00), <2 x double> %2450
  %2452 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2310, <2 x double> %2438, <2 x double> %2451)
  %2453 = fmul <2 x double> %2452, splat (double -4.615260e+02)
  %2454 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2063, <2 x double> %2379, <2 x double> %2453)
  %2455 = fmul <2 x double> %2369, splat (double 2.870530e+02)
  %2456 = select <2 x i1> %2360, <2 x double> zeroinitializer, <2 x double> %2455
  %2457 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2320, <2 x double> %2355, <2 x double> %2456)
  %2458 = fadd <2 x double> %2457, %2454
  %2459 = fcmp ule <2 x double> %2446, zeroinitializer
  %2460 = fcmp olt <2 x double> %2082, %2085
  %2461 = select <2 x i1> %2459, <2 x i1> splat (i1 true), <2 x i1> %2460
  %2462 = select <2 x i1> %2461, <2 x double> %2082, <2 x double> %2085
  %2463 = fcmp ogt <2 x double> %2081, %2085
  %2464 = select <2 x i1> %2463, <2 x double> %2081, <2 x double> %2085
  %2465 = select <2 x i1> %2459, <2 x double> %2464, <2 x double> %2081
  %2466 = fdiv <2 x double> %2446, %2458
  %2467 = fsub <2 x double> %2085, %2466
  %2468 = fcmp uge <2 x double> %2465, %2467
  %2469 = fcmp uge <2 x double> %2467, %2462
  %2470 = or <2 x i1> %2468, %2469
  %2471 = fadd <2 x double> %2465, %2462
  %2472 = fmul <2 x double> %2471, splat (double 5.000000e-01)
  %2473 = select <2 x i1> %2470, <2 x double> %2472, <2 x double> %2467
  %2474 = fsub <2 x double> %2473, %2085
  %2475 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2474)
  %2476 = fcmp oge <2 x double> %2475, splat (double 2.000000e-01)
  %2477 = select <2 x i1> %2476, <2 x i64> %2083, <2 x i64> zeroinitializer
  %2478 = icmp eq <2 x i64> %2477, zeroinitializer
  %2479 = select <2 x i1> %2478, <2 x double> %2085, <2 x double> %2473
  %2480 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2477)
  %2481 = icmp ne i64 %2480, 0
  %2482 = add nuw nsw i32 %2084, 1
  %2483 = icmp samesign ult i32 %2084, 59
  %2484 = select i1 %2481, i1 %2483, i1 false
  br i1 %2484, label %2079, label %2485, !llvm.loop !97

2485:                                             ; preds = %2308
  %2486 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %2487 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %2488 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %2489 = load <2 x double>, ptr %207, align 16, !tbaa !26
  %2490 = fmul <2 x double> %2488, %2489
  %2491 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2486, <2 x double> %2487, <2 x double> %2490)
  %2492 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %2493 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %2494 = fsub <2 x double> %2493, %2479
  %2495 = fcmp ule <2 x double> %2494, zeroinitializer
  %2496 = fcmp ule <2 x double> %2492, zeroinitializer
  %2497 = or <2 x i1> %2496, %2495
  %2498 = fmul <2 x double> %2078, %2492
  %2499 = fadd <2 x double> %2494, splat (double 2.000000e+02)
  %2500 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2499)
  %2501 = select <2 x i1> %2495, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2500
  %2502 = fmul <2 x double> %2498, %2494
  %2503 = fdiv <2 x double> %2502, %2501
  %2504 = fmul <2 x double> %2503, splat (double 2.870530e+02)
  %2505 = select <2 x i1> %2497, <2 x double> zeroinitializer, <2 x double> %2504
  %2506 = fdiv <2 x double> %2505, %2063
  %2507 = fsub <2 x double> %2506, %2491
  %2508 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %2509 = load <2 x double>, ptr %198, align 16, !tbaa !26
  %2510 = fmul <2 x double> %2318, %2509
  %2511 = fdiv <2 x double> %2353, %2510
  %2512 = fadd <2 x double> %2508, %2511
  %2513 = fdiv <2 x double> %2507, %2512
  %2514 = fcmp ogt <2 x double> %2513, zeroinitializer
  %2515 = select <2 x i1> %2514, <2 x double> %2513, <2 x double> zeroinitializer
  %2516 = fcmp olt <2 x double> %2515, %2479
  %2517 = select <2 x i1> %2516, <2 x double> %2515, <2 x double> %2479
  %2518 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2519 = select <2 x i1> %2074, <2 x double> %2518, <2 x double> %2517
  store <2 x double> %2519, ptr %194, align 16, !tbaa !26
  %2520 = select <2 x i1> %2074, <2 x double> %2051, <2 x double> %2431
  store <2 x double> %2520, ptr %195, align 16, !tbaa !26
  store <2 x double> %2479, ptr %188, align 16, !tbaa !26
  store <2 x double> %2114, ptr %208, align 16, !tbaa !26
  %2521 = load i64, ptr %169, align 8, !tbaa !20
  br label %2692

2522:                                             ; preds = %2030
  store <2 x double> %2032, ptr %208, align 16, !tbaa !26
  %2523 = load i64, ptr %169, align 8, !tbaa !20, !noalias !98
  %2524 = icmp sgt i64 %2523, 0
  br i1 %2524, label %2525, label %2695

2525:                                             ; preds = %2522
  %2526 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2032, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2527 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2032, <2 x double> %2526, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2528 = fdiv <2 x double> splat (double 1.000000e+00), %2527
  %2529 = fadd <2 x double> %2032, splat (double 1.000000e-09)
  br label %2530

2530:                                             ; preds = %2525, %2627
  %2531 = phi i64 [ 0, %2525 ], [ %2689, %2627 ]
  %2532 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !98
  %2533 = getelementptr inbounds nuw %struct.Piece, ptr %2532, i64 %2531
  %2534 = getelementptr inbounds nuw i8, ptr %2533, i64 1456
  %2535 = load <2 x double>, ptr %2534, align 16, !tbaa !26, !noalias !98
  %2536 = getelementptr inbounds nuw i8, ptr %2533, i64 1472
  %2537 = load <2 x double>, ptr %2536, align 16, !tbaa !26, !noalias !98
  %2538 = getelementptr inbounds nuw i8, ptr %2533, i64 1824
  %2539 = load <2 x double>, ptr %2538, align 16, !tbaa !26, !noalias !98
  %2540 = fcmp ule <2 x double> %2539, splat (double 1.000000e+00)
  %2541 = fmul <2 x double> %2032, %2537
  %2542 = fcmp ogt <2 x double> %2535, %2541
  %2543 = and <2 x i1> %2540, %2542
  %2544 = fneg <2 x double> %2537
  %2545 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2544, <2 x double> %2032, <2 x double> %2535)
  %2546 = fmul <2 x double> %2528, %2545
  %2547 = select <2 x i1> %2543, <2 x double> %2546, <2 x double> zeroinitializer
  %2548 = fdiv <2 x double> %2535, %2537
  %2549 = select <2 x i1> %2543, <2 x double> %2032, <2 x double> %2548
  %2550 = getelementptr inbounds nuw i8, ptr %2533, i64 1872
  %2551 = load <2 x i64>, ptr %2550, align 16, !tbaa !26, !noalias !98
  %2552 = getelementptr inbounds nuw i8, ptr %2533, i64 560
  %2553 = load <2 x double>, ptr %2552, align 16, !tbaa !26, !noalias !98
  %2554 = fcmp ule <2 x double> %2553, zeroinitializer
  %2555 = xor <2 x i1> %2540, splat (i1 true)
  %2556 = select <2 x i1> %2555, <2 x i1> splat (i1 true), <2 x i1> %2554
  %2557 = getelementptr inbounds nuw i8, ptr %2533, i64 1488
  %2558 = load <2 x double>, ptr %2557, align 16, !tbaa !26, !noalias !98
  %2559 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2544, <2 x double> %2558, <2 x double> %2535)
  %2560 = fcmp ogt <2 x double> %2559, zeroinitializer
  %2561 = select <2 x i1> %2560, <2 x double> %2559, <2 x double> zeroinitializer
  %2562 = fmul <2 x double> %2528, %2561
  %2563 = icmp eq <2 x i64> %2551, zeroinitializer
  %2564 = select <2 x i1> %2556, <2 x i1> splat (i1 true), <2 x i1> %2563
  %2565 = select <2 x i1> %2564, <2 x double> %2547, <2 x double> %2562
  %2566 = select <2 x i1> %2564, <2 x double> %2549, <2 x double> %2558
  %2567 = load i64, ptr %132, align 16, !tbaa !21, !noalias !101
  %2568 = sitofp i64 %2567 to double
  %2569 = insertelement <2 x double> poison, double %2568, i64 0
  %2570 = shufflevector <2 x double> %2569, <2 x double> poison, <2 x i32> zeroinitializer
  %2571 = icmp sgt i64 %2567, 0
  br i1 %2571, label %2572, label %2627

2572:                                             ; preds = %2530
  %2573 = getelementptr inbounds nuw i8, ptr %2533, i64 1944
  %2574 = load ptr, ptr %2573, align 8, !tbaa !71, !noalias !101
  %2575 = getelementptr inbounds nuw i8, ptr %2533, i64 1952
  %2576 = load ptr, ptr %2575, align 16, !tbaa !72, !noalias !101
  %2577 = getelementptr inbounds nuw i8, ptr %2533, i64 1888
  %2578 = load i64, ptr %2577, align 16, !tbaa !31, !noalias !101
  %2579 = getelementptr inbounds nuw i8, ptr %2533, i64 1968
  %2580 = getelementptr inbounds nuw i8, ptr %2533, i64 1960
  %2581 = getelementptr inbounds nuw i8, ptr %2533, i64 1976
  br label %2582

2582:                                             ; preds = %2572, %2611
  %2583 = phi <2 x i64> [ splat (i64 -1), %2572 ], [ %2596, %2611 ]
  %2584 = phi i64 [ %2567, %2572 ], [ %2587, %2611 ]
  %2585 = phi <2 x double> [ %2570, %2572 ], [ %2625, %2611 ]
  %2586 = phi <2 x double> [ zeroinitializer, %2572 ], [ %2621, %2611 ]
  %2587 = add nsw i64 %2584, -1
  %2588 = getelementptr inbounds nuw <2 x double>, ptr %2574, i64 %2587
  %2589 = load <2 x double>, ptr %2588, align 16, !tbaa !26, !noalias !101
  %2590 = getelementptr inbounds nuw <2 x double>, ptr %2576, i64 %2587
  %2591 = load <2 x double>, ptr %2590, align 16, !tbaa !26, !noalias !101
  %2592 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2591, <2 x double> %2032, <2 x double> %2589)
  %2593 = fcmp ogt <2 x double> %2592, %2529
  %2594 = select <2 x i1> %2593, <2 x i64> %2583, <2 x i64> zeroinitializer
  %2595 = icmp sgt i64 %2584, %2578
  %2596 = select i1 %2595, <2 x i64> %2594, <2 x i64> zeroinitializer
  %2597 = icmp slt i64 %2584, %2567
  br i1 %2597, label %2598, label %2607

2598:                                             ; preds = %2582
  %2599 = load ptr, ptr %2579, align 16, !tbaa !69, !noalias !101
  %2600 = getelementptr inbounds nuw <2 x double>, ptr %2599, i64 %2584
  %2601 = load <2 x double>, ptr %2600, align 16, !tbaa !26, !noalias !101
  %2602 = fsub <2 x double> %2592, %2032
  %2603 = fmul <2 x double> %2602, %2601
  %2604 = icmp eq <2 x i64> %2596, %2583
  %2605 = select <2 x i1> %2604, <2 x double> zeroinitializer, <2 x double> %2603
  %2606 = fadd <2 x double> %2586, %2605
  br label %2607

2607:                                             ; preds = %2598, %2582
  %2608 = phi <2 x double> [ %2606, %2598 ], [ %2586, %2582 ]
  %2609 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2596)
  %2610 = icmp eq i64 %2609, 0
  br i1 %2610, label %2627, label %2611

2611:                                             ; preds = %2607
  %2612 = load ptr, ptr %2580, align 8, !tbaa !68, !noalias !101
  %2613 = getelementptr inbounds nuw <2 x double>, ptr %2612, i64 %2587
  %2614 = load <2 x double>, ptr %2613, align 16, !tbaa !26, !noalias !101
  %2615 = load ptr, ptr %2581, align 8, !tbaa !70, !noalias !101
  %2616 = getelementptr inbounds nuw <2 x double>, ptr %2615, i64 %2587
  %2617 = load <2 x double>, ptr %2616, align 16, !tbaa !26, !noalias !101
  %2618 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2617, <2 x double> %2032, <2 x double> %2614)
  %2619 = icmp eq <2 x i64> %2596, zeroinitializer
  %2620 = select <2 x i1> %2619, <2 x double> zeroinitializer, <2 x double> %2618
  %2621 = fadd <2 x double> %2608, %2620
  %2622 = uitofp nneg i64 %2587 to double
  %2623 = insertelement <2 x double> poison, double %2622, i64 0
  %2624 = shufflevector <2 x double> %2623, <2 x double> poison, <2 x i32> zeroinitializer
  %2625 = select <2 x i1> %2619, <2 x double> %2585, <2 x double> %2624
  %2626 = icmp samesign ugt i64 %2584, 1
  br i1 %2626, label %2582, label %2627, !llvm.loop !89

2627:                                             ; preds = %2611, %2607, %2530
  %2628 = phi <2 x double> [ %2570, %2530 ], [ %2585, %2607 ], [ %2625, %2611 ]
  %2629 = phi <2 x double> [ zeroinitializer, %2530 ], [ %2608, %2607 ], [ %2621, %2611 ]
  %2630 = getelementptr inbounds nuw i8, ptr %2533, i64 1520
  %2631 = load <2 x double>, ptr %2630, align 16, !tbaa !26, !noalias !98
  %2632 = getelementptr inbounds nuw i8, ptr %2533, i64 1376
  %2633 = load <2 x double>, ptr %2632, align 16, !tbaa !26, !noalias !98
  %2634 = getelementptr inbounds nuw i8, ptr %2533, i64 1760
  %2635 = load <2 x double>, ptr %2634, align 16, !tbaa !26, !noalias !98
  %2636 = fneg <2 x double> %2635
  %2637 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2631, <2 x double> %2633, <2 x double> %2636)
  %2638 = getelementptr inbounds nuw i8, ptr %2533, i64 1744
  %2639 = load <2 x double>, ptr %2638, align 16, !tbaa !26, !noalias !98
  %2640 = fadd <2 x double> %2631, %2639
  %2641 = getelementptr inbounds nuw i8, ptr %2533, i64 1840
  %2642 = load <2 x i64>, ptr %2641, align 16, !tbaa !26, !noalias !98
  %2643 = getelementptr inbounds nuw i8, ptr %2533, i64 2048
  %2644 = load ptr, ptr %2643, align 16, !tbaa !77, !noalias !98
  %2645 = load <2 x double>, ptr %2644, align 16, !tbaa !26, !noalias !98
  %2646 = fmul <2 x double> %2631, %2645
  %2647 = icmp eq <2 x i64> %2642, zeroinitializer
  %2648 = select <2 x i1> %2647, <2 x double> %2637, <2 x double> %2646
  %2649 = getelementptr inbounds nuw i8, ptr %2533, i64 2056
  %2650 = load ptr, ptr %2649, align 8, !tbaa !78, !noalias !98
  %2651 = load <2 x double>, ptr %2650, align 16, !tbaa !26, !noalias !98
  %2652 = fsub <2 x double> splat (double 1.000000e+00), %2651
  %2653 = fmul <2 x double> %2631, %2652
  %2654 = select <2 x i1> %2647, <2 x double> %2640, <2 x double> %2653
  %2655 = fneg <2 x double> %2654
  %2656 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2655, <2 x double> %2032, <2 x double> %2648)
  %2657 = fcmp olt <2 x double> %2628, %2570
  %2658 = and <2 x i1> %2540, %2657
  %2659 = fcmp ogt <2 x double> %2629, zeroinitializer
  %2660 = fcmp oge <2 x double> %2656, zeroinitializer
  %2661 = and <2 x i1> %2659, %2660
  %2662 = and <2 x i1> %2658, %2661
  %2663 = sext <2 x i1> %2662 to <2 x i64>
  %2664 = xor <2 x i64> %2663, splat (i64 -1)
  %2665 = fadd <2 x double> %2629, %2656
  %2666 = fcmp ogt <2 x double> %2665, zeroinitializer
  %2667 = and <2 x i1> %2658, %2666
  %2668 = select <2 x i1> %2667, <2 x i64> %2664, <2 x i64> zeroinitializer
  %2669 = or <2 x i64> %2668, %2663
  %2670 = fmul <2 x double> %2528, %2656
  %2671 = select <2 x i1> %2662, <2 x double> %2670, <2 x double> zeroinitializer
  %2672 = icmp eq <2 x i64> %2669, zeroinitializer
  %2673 = select <2 x i1> %2672, <2 x double> %2565, <2 x double> %2671
  %2674 = select <2 x i1> %2672, <2 x double> %2566, <2 x double> %2032
  %2675 = getelementptr inbounds nuw i8, ptr %2533, i64 1408
  store <2 x double> %2673, ptr %2675, align 16, !tbaa !26, !noalias !98
  %2676 = getelementptr inbounds nuw i8, ptr %2533, i64 1392
  store <2 x double> %2674, ptr %2676, align 16, !tbaa !26, !noalias !98
  %2677 = fmul <2 x double> %2528, %2629
  %2678 = fmul <2 x double> %2528, %2665
  %2679 = icmp eq <2 x i64> %2668, zeroinitializer
  %2680 = select <2 x i1> %2679, <2 x double> zeroinitializer, <2 x double> %2678
  %2681 = select <2 x i1> %2662, <2 x double> %2677, <2 x double> %2680
  %2682 = getelementptr inbounds nuw i8, ptr %2533, i64 1424
  store <2 x double> %2681, ptr %2682, align 16, !tbaa !26, !noalias !98
  %2683 = load i64, ptr %132, align 16, !tbaa !21, !noalias !98
  %2684 = sitofp i64 %2683 to double
  %2685 = insertelement <2 x double> poison, double %2684, i64 0
  %2686 = shufflevector <2 x double> %2685, <2 x double> poison, <2 x i32> zeroinitializer
  %2687 = select <2 x i1> %2672, <2 x double> %2686, <2 x double> %2628
  %2688 = getelementptr inbounds nuw i8, ptr %2533, i64 1440
  store <2 x double> %2687, ptr %2688, align 16, !tbaa !26, !noalias !98
  %2689 = add nuw nsw i64 %2531, 1
  %2690 = load i64, ptr %169, align 8, !tbaa !20, !noalias !98
  %2691 = icmp slt i64 %2689, %2690
  br i1 %2691, label %2530, label %2692, !llvm.loop !90

2692:                                             ; preds = %2627, %2485
  %2693 = phi i64 [ %2521, %2485 ], [ %2690, %2627 ]
  %2694 = icmp sgt i64 %2693, 0
  br i1 %2694, label %2869, label %2695

2695:                                             ; preds = %2692, %2522
  %2696 = load <2 x double>, ptr %178, align 16, !tbaa !26
  br label %2771

2697:                                             ; preds = %2973
  %2698 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %2699 = icmp sgt i64 %2997, 0
  br i1 %2699, label %2700, label %2771

2700:                                             ; preds = %2697
  %2701 = load ptr, ptr %142, align 8, !tbaa !28
  %2702 = and i64 %2997, 1
  %2703 = icmp eq i64 %2997, 1
  br i1 %2703, label %2747, label %2704

2704:                                             ; preds = %2700
  %2705 = and i64 %2997, 9223372036854775806
  br label %2706

2706:                                             ; preds = %2706, %2704
  %2707 = phi <2 x double> [ zeroinitializer, %2704 ], [ %2738, %2706 ]
  %2708 = phi <2 x double> [ zeroinitializer, %2704 ], [ %2743, %2706 ]
  %2709 = phi i64 [ 0, %2704 ], [ %2744, %2706 ]
  %2710 = phi i64 [ 0, %2704 ], [ %2745, %2706 ]
  %2711 = getelementptr inbounds nuw %struct.Piece, ptr %2701, i64 %2709
  %2712 = getelementptr inbounds nuw i8, ptr %2711, i64 1872
  %2713 = load <2 x i64>, ptr %2712, align 16, !tbaa !26
  %2714 = getelementptr inbounds nuw i8, ptr %2711, i64 32
  %2715 = load <2 x double>, ptr %2714, align 16, !tbaa !26
  %2716 = getelementptr inbounds nuw i8, ptr %2711, i64 1584
  %2717 = load <2 x double>, ptr %2716, align 16, !tbaa !26
  %2718 = fmul <2 x double> %2715, %2717
  %2719 = icmp eq <2 x i64> %2713, zeroinitializer
  %2720 = select <2 x i1> %2719, <2 x double> %2718, <2 x double> zeroinitializer
  %2721 = fadd <2 x double> %2707, %2720
  %2722 = getelementptr inbounds nuw i8, ptr %2711, i64 1552
  %2723 = load <2 x double>, ptr %2722, align 16, !tbaa !26
  %2724 = fmul <2 x double> %2715, %2723
  %2725 = select <2 x i1> %2719, <2 x double> %2724, <2 x double> zeroinitializer
  %2726 = fadd <2 x double> %2708, %2725
  %2727 = or disjoint i64 %2709, 1
  %2728 = getelementptr inbounds nuw %struct.Piece, ptr %2701, i64 %2727
  %2729 = getelementptr inbounds nuw i8, ptr %2728, i64 1872
  %2730 = load <2 x i64>, ptr %2729, align 16, !tbaa !26
  %2731 = getelementptr inbounds nuw i8, ptr %2728, i64 32
  %2732 = load <2 x double>, ptr %2731, align 16, !tbaa !26
  %2733 = getelementptr inbounds nuw i8, ptr %2728, i64 1584
  %2734 = load <2 x double>, ptr %2733, align 16, !tbaa !26
  %2735 = fmul <2 x double> %2732, %2734
  %2736 = icmp eq <2 x i64> %2730, zeroinitializer
  %2737 = select <2 x i1> %2736, <2 x double> %2735, <2 x double> zeroinitializer
  %2738 = fadd <2 x double> %2721, %2737
  %2739 = getelementptr inbounds nuw i8, ptr %2728, i64 1552
  %2740 = load <2 x double>, ptr %2739, align 16, !tbaa !26
  %2741 = fmul <2 x double> %2732, %2740
  %2742 = select <2 x i1> %2736, <2 x double> %2741, <2 x double> zeroinitializer
  %2743 = fadd <2 x double> %2726, %2742
  %2744 = add nuw nsw i64 %2709, 2
  %2745 = add i64 %2710, 2
  %2746 = icmp eq i64 %2745, %2705
  br i1 %2746, label %2747, label %2706, !llvm.loop !104

2747:                                             ; preds = %2706, %2700
  %2748 = phi <2 x double> [ poison, %2700 ], [ %2738, %2706 ]
  %2749 = phi <2 x double> [ poison, %2700 ], [ %2743, %2706 ]
  %2750 = phi <2 x double> [ zeroinitializer, %2700 ], [ %2738, %2706 ]
  %2751 = phi <2 x double> [ zeroinitializer, %2700 ], [ %2743, %2706 ]
  %2752 = phi i64 [ 0, %2700 ], [ %2744, %2706 ]
  %2753 = icmp eq i64 %2702, 0
  br i1 %2753, label %2771, label %2754

2754:                                             ; preds = %2747
  %2755 = getelementptr inbounds nuw %struct.Piece, ptr %2701, i64 %2752
  %2756 = getelementptr inbounds nuw i8, ptr %2755, i64 1872
  %2757 = load <2 x i64>, ptr %2756, align 16, !tbaa !26
  %2758 = getelementptr inbounds nuw i8, ptr %2755, i64 32
  %2759 = load <2 x double>, ptr %2758, align 16, !tbaa !26
  %2760 = getelementptr inbounds nuw i8, ptr %2755, i64 1584
  %2761 = load <2 x double>, ptr %2760, align 16, !tbaa !26
  %2762 = fmul <2 x double> %2759, %2761
  %2763 = icmp eq <2 x i64> %2757, zeroinitializer
  %2764 = select <2 x i1> %2763, <2 x double> %2762, <2 x double> zeroinitializer
  %2765 = fadd <2 x double> %2750, %2764
  %2766 = getelementptr inbounds nuw i8, ptr %2755, i64 1552
  %2767 = load <2 x double>, ptr %2766, align 16, !tbaa !26
  %2768 = fmul <2 x double> %2759, %2767
  %2769 = select <2 x i1> %2763, <2 x double> %2768, <2 x double> zeroinitializer
  %2770 = fadd <2 x double> %2751, %2769
  br label %2771

2771:                                             ; preds = %2754, %2747, %2695, %2697
  %2772 = phi i1 [ false, %2697 ], [ false, %2695 ], [ true, %2747 ], [ true, %2754 ]
  %2773 = phi <2 x double> [ %2698, %2697 ], [ %2696, %2695 ], [ %2698, %2747 ], [ %2698, %2754 ]
  %2774 = phi <2 x double> [ zeroinitializer, %2697 ], [ zeroinitializer, %2695 ], [ %2749, %2747 ], [ %2770, %2754 ]
  %2775 = phi <2 x double> [ zeroinitializer, %2697 ], [ zeroinitializer, %2695 ], [ %2748, %2747 ], [ %2765, %2754 ]
  %2776 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %2777 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %2778 = fsub <2 x double> %2773, %2777
  %2779 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2776, <2 x double> %2778, <2 x double> %2775)
  %2780 = fadd <2 x double> %2774, %2776
  store <2 x double> %2779, ptr %210, align 16, !tbaa !26
  %2781 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %2782 = fcmp ule <2 x double> %2781, zeroinitializer
  %2783 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %2784 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2781, <2 x double> splat (double 5.000000e-01), <2 x double> %2783)
  %2785 = fsub <2 x double> %2784, %2773
  %2786 = fcmp ogt <2 x double> %2781, splat (double 1.000000e-30)
  %2787 = select <2 x i1> %2786, <2 x double> %2781, <2 x double> splat (double 1.000000e-30)
  %2788 = fdiv <2 x double> %2785, %2787
  %2789 = fcmp ogt <2 x double> %2788, zeroinitializer
  %2790 = select <2 x i1> %2789, <2 x double> %2788, <2 x double> zeroinitializer
  %2791 = fcmp olt <2 x double> %2790, splat (double 1.000000e+00)
  %2792 = select <2 x i1> %2791, <2 x double> %2790, <2 x double> splat (double 1.000000e+00)
  %2793 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %2794 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %2795 = icmp eq <2 x i64> %2794, zeroinitializer
  %2796 = select <2 x i1> %2795, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %2797 = select <2 x i1> %2782, <2 x double> %2796, <2 x double> %2792
  %2798 = fmul <2 x double> %2793, %2797
  %2799 = fcmp ule <2 x double> %2798, zeroinitializer
  %2800 = fcmp uge <2 x double> %2798, %2793
  %2801 = or <2 x i1> %2799, %2800
  %2802 = or <2 x i1> %2782, %2801
  %2803 = fdiv <2 x double> %2793, %2787
  %2804 = select <2 x i1> %2802, <2 x double> zeroinitializer, <2 x double> %2803
  %2805 = fadd <2 x double> %2780, %2804
  %2806 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %2807 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %2808 = fdiv <2 x double> splat (double 2.000000e+00), %2807
  %2809 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %2810 = icmp eq <2 x i64> %2806, zeroinitializer
  %2811 = select <2 x i1> %2810, <2 x double> %2809, <2 x double> %2808
  %2812 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %2813 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %2814 = fmul <2 x double> %2812, %2813
  %2815 = load <2 x double>, ptr %160, align 16, !tbaa !26
  %2816 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %2817 = fmul <2 x double> %2816, splat (double 5.000000e-01)
  %2818 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2817, <2 x double> %2812, <2 x double> %2815)
  %2819 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %2820 = fmul <2 x double> %2812, %2819
  %2821 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2814, <2 x double> %2818, <2 x double> %2820)
  %2822 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %2823 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %2824 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %2825 = fmul <2 x double> %2813, %2824
  %2826 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2817, <2 x double> %2824, <2 x double> %2815)
  %2827 = fmul <2 x double> %2819, %2824
  %2828 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2825, <2 x double> %2826, <2 x double> %2827)
  %2829 = fmul <2 x double> %2823, %2828
  %2830 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2822, <2 x double> %2821, <2 x double> %2829)
  %2831 = fmul <2 x double> %2773, %2813
  %2832 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2817, <2 x double> %2773, <2 x double> %2815)
  %2833 = fmul <2 x double> %2773, %2819
  %2834 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2831, <2 x double> %2832, <2 x double> %2833)
  %2835 = fneg <2 x double> %2811
  %2836 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %2837 = fneg <2 x double> %2836
  %2838 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2835, <2 x double> %2821, <2 x double> %2837)
  %2839 = select <2 x i1> %2810, <2 x double> %2830, <2 x double> %2838
  %2840 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2811, <2 x double> %2834, <2 x double> %2839)
  %2841 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2816, <2 x double> %2773, <2 x double> %2815)
  %2842 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2813, <2 x double> %2841, <2 x double> %2819)
  %2843 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %2844 = fcmp une <2 x double> %2843, zeroinitializer
  %2845 = fadd <2 x double> %2779, %2840
  %2846 = fsub <2 x double> %2845, %2798
  %2847 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2811, <2 x double> %2842, <2 x double> %2805)
  %2848 = fdiv <2 x double> %2846, %2847
  %2849 = fsub <2 x double> %2773, %2848
  %2850 = select <2 x i1> %2844, <2 x double> %2773, <2 x double> %2849
  store <2 x double> %2850, ptr %178, align 16, !tbaa !26
  %2851 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %2852 = fneg <2 x double> %2822
  %2853 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2852, <2 x double> %2851, <2 x double> %2798)
  %2854 = load <2 x double>, ptr %212, align 16, !tbaa !26
  %2855 = fneg <2 x double> %2823
  %2856 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2855, <2 x double> %2854, <2 x double> %2853)
  %2857 = fdiv <2 x double> %2856, %2809
  %2858 = load <2 x double>, ptr %213, align 16, !tbaa !26
  %2859 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2852, <2 x double> %2858, <2 x double> %2779)
  %2860 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %2861 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2855, <2 x double> %2860, <2 x double> %2859)
  %2862 = fdiv <2 x double> %2861, %2809
  %2863 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2798, <2 x double> %2807, <2 x double> %2851)
  %2864 = select <2 x i1> %2810, <2 x double> %2857, <2 x double> %2863
  %2865 = load <2 x double>, ptr %215, align 16, !tbaa !26
  %2866 = select <2 x i1> %2844, <2 x double> %2865, <2 x double> %2864
  store <2 x double> %2866, ptr %215, align 16, !tbaa !26
  %2867 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %2868 = select <2 x i1> %2844, <2 x double> %2867, <2 x double> %2862
  store <2 x double> %2868, ptr %216, align 16, !tbaa !26
  br i1 %2772, label %2999, label %3299

2869:                                             ; preds = %2692, %2973
  %2870 = phi i64 [ %2996, %2973 ], [ 0, %2692 ]
  %2871 = load ptr, ptr %142, align 8, !tbaa !28
  %2872 = getelementptr inbounds nuw %struct.Piece, ptr %2871, i64 %2870
  %2873 = getelementptr inbounds nuw i8, ptr %2872, i64 1392
  %2874 = load <2 x double>, ptr %2873, align 16, !tbaa !26
  %2875 = getelementptr inbounds nuw i8, ptr %2872, i64 1440
  %2876 = load <2 x double>, ptr %2875, align 16, !tbaa !26
  %2877 = getelementptr inbounds nuw i8, ptr %2872, i64 1944
  %2878 = load ptr, ptr %2877, align 8, !tbaa !71
  %2879 = getelementptr inbounds nuw i8, ptr %2872, i64 1952
  %2880 = load ptr, ptr %2879, align 16, !tbaa !72
  %2881 = getelementptr inbounds nuw i8, ptr %2872, i64 1896
  %2882 = load ptr, ptr %2881, align 8, !tbaa !57
  %2883 = load i64, ptr %132, align 16, !tbaa !21
  %2884 = icmp sgt i64 %2883, 0
  br i1 %2884, label %2885, label %2905

2885:                                             ; preds = %2869
  %2886 = and i64 %2883, 1
  %2887 = icmp eq i64 %2886, 0
  br i1 %2887, label %2901, label %2888

2888:                                             ; preds = %2885
  %2889 = add nsw i64 %2883, -1
  %2890 = uitofp nneg i64 %2889 to double
  %2891 = insertelement <2 x double> poison, double %2890, i64 0
  %2892 = shufflevector <2 x double> %2891, <2 x double> poison, <2 x i32> zeroinitializer
  %2893 = fcmp ugt <2 x double> %2876, %2892
  %2894 = getelementptr inbounds nuw <2 x double>, ptr %2878, i64 %2889
  %2895 = load <2 x double>, ptr %2894, align 16, !tbaa !26
  %2896 = getelementptr inbounds nuw <2 x double>, ptr %2880, i64 %2889
  %2897 = load <2 x double>, ptr %2896, align 16, !tbaa !26
  %2898 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2897, <2 x double> %2874, <2 x double> %2895)
  %2899 = select <2 x i1> %2893, <2 x double> %2898, <2 x double> %2874
  %2900 = getelementptr inbounds nuw <2 x double>, ptr %2882, i64 %2889
  store <2 x double> %2899, ptr %2900, align 16, !tbaa !26
  br label %2901

2901:                                             ; preds = %2888, %2885
  %2902 = phi <2 x double> [ %2874, %2885 ], [ %2899, %2888 ]
  %2903 = phi i64 [ %2883, %2885 ], [ %2889, %2888 ]
  %2904 = icmp eq i64 %2883, 1
  br i1 %2904, label %2905, label %2920

2905:                                             ; preds = %2901, %2920, %2869
  %2906 = getelementptr inbounds nuw i8, ptr %2872, i64 1840
  %2907 = load <2 x i64>, ptr %2906, align 16, !tbaa !26
  %2908 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2907)
  %2909 = icmp eq i64 %2908, 0
  %2910 = load i64, ptr %133, align 8, !tbaa !22
  %2911 = icmp sgt i64 %2910, 0
  br i1 %2909, label %2917, label %2912

2912:                                             ; preds = %2905
  br i1 %2911, label %2913, label %2973

2913:                                             ; preds = %2912
  %2914 = getelementptr inbounds nuw i8, ptr %2872, i64 2048
  %2915 = getelementptr inbounds nuw i8, ptr %2872, i64 2056
  %2916 = getelementptr inbounds nuw i8, ptr %2872, i64 2016
  br label %2948

2917:                                             ; preds = %2905
  br i1 %2911, label %2918, label %2973

2918:                                             ; preds = %2917
  %2919 = getelementptr inbounds nuw i8, ptr %2872, i64 2016
  br label %2966

2920:                                             ; preds = %2901, %2920
  %2921 = phi <2 x double> [ %2945, %2920 ], [ %2902, %2901 ]
  %2922 = phi i64 [ %2935, %2920 ], [ %2903, %2901 ]
  %2923 = add nsw i64 %2922, -1
  %2924 = uitofp nneg i64 %2923 to double
  %2925 = insertelement <2 x double> poison, double %2924, i64 0
  %2926 = shufflevector <2 x double> %2925, <2 x double> poison, <2 x i32> zeroinitializer
  %2927 = fcmp ugt <2 x double> %2876, %2926
  %2928 = getelementptr inbounds nuw <2 x double>, ptr %2878, i64 %2923
  %2929 = load <2 x double>, ptr %2928, align 16, !tbaa !26
  %2930 = getelementptr inbounds nuw <2 x double>, ptr %2880, i64 %2923
  %2931 = load <2 x double>, ptr %2930, align 16, !tbaa !26
  %2932 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2931, <2 x double> %2921, <2 x double> %2929)
  %2933 = select <2 x i1> %2927, <2 x double> %2932, <2 x double> %2874
  %2934 = getelementptr inbounds nuw <2 x double>, ptr %2882, i64 %2923
  store <2 x double> %2933, ptr %2934, align 16, !tbaa !26
  %2935 = add nsw i64 %2922, -2
  %2936 = uitofp nneg i64 %2935 to double
  %2937 = insertelement <2 x double> poison, double %2936, i64 0
  %2938 = shufflevector <2 x double> %2937, <2 x double> poison, <2 x i32> zeroinitializer
  %2939 = fcmp ugt <2 x double> %2876, %2938
  %2940 = getelementptr inbounds nuw <2 x double>, ptr %2878, i64 %2935
  %2941 = load <2 x double>, ptr %2940, align 16, !tbaa !26
  %2942 = getelementptr inbounds nuw <2 x double>, ptr %2880, i64 %2935
  %2943 = load <2 x double>, ptr %2942, align 16, !tbaa !26
  %2944 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2943, <2 x double> %2933, <2 x double> %2941)
  %2945 = select <2 x i1> %2939, <2 x double> %2944, <2 x double> %2874
  %2946 = getelementptr inbounds nuw <2 x double>, ptr %2882, i64 %2935
  store <2 x double> %2945, ptr %2946, align 16, !tbaa !26
  %2947 = icmp samesign ugt i64 %2923, 1
  br i1 %2947, label %2920, label %2905, !llvm.loop !105

2948:                                             ; preds = %2913, %2948
  %2949 = phi i64 [ 0, %2913 ], [ %2963, %2948 ]
  %2950 = phi <2 x double> [ %2874, %2913 ], [ %2960, %2948 ]
  %2951 = load <2 x i64>, ptr %2906, align 16, !tbaa !26
  %2952 = load ptr, ptr %2914, align 16, !tbaa !77
  %2953 = getelementptr inbounds nuw <2 x double>, ptr %2952, i64 %2949
  %2954 = load <2 x double>, ptr %2953, align 16, !tbaa !26
  %2955 = load ptr, ptr %2915, align 8, !tbaa !78
  %2956 = getelementptr inbounds nuw <2 x double>, ptr %2955, i64 %2949
  %2957 = load <2 x double>, ptr %2956, align 16, !tbaa !26
  %2958 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2957, <2 x double> %2950, <2 x double> %2954)
  %2959 = icmp eq <2 x i64> %2951, zeroinitializer
  %2960 = select <2 x i1> %2959, <2 x double> %2874, <2 x double> %2958
  %2961 = load ptr, ptr %2916, align 16, !tbaa !106
  %2962 = getelementptr inbounds nuw <2 x double>, ptr %2961, i64 %2949
  store <2 x double> %2960, ptr %2962, align 16, !tbaa !26
  %2963 = add nuw nsw i64 %2949, 1
  %2964 = load i64, ptr %133, align 8, !tbaa !22
  %2965 = icmp slt i64 %2963, %2964
  br i1 %2965, label %2948, label %2973, !llvm.loop !107

2966:                                             ; preds = %2918, %2966
  %2967 = phi i64 [ 0, %2918 ], [ %2970, %2966 ]
  %2968 = load ptr, ptr %2919, align 16, !tbaa !106
  %2969 = getelementptr inbounds nuw <2 x double>, ptr %2968, i64 %2967
  store <2 x double> %2874, ptr %2969, align 16, !tbaa !26
  %2970 = add nuw nsw i64 %2967, 1
  %2971 = load i64, ptr %133, align 8, !tbaa !22
  %2972 = icmp slt i64 %2970, %2971
  br i1 %2972, label %2966, label %2973, !llvm.loop !108

2973:                                             ; preds = %2948, %2966, %2912, %2917
  %2974 = phi <2 x double> [ %2874, %2917 ], [ %2874, %2912 ], [ %2874, %2966 ], [ %2960, %2948 ]
  %2975 = load <2 x i64>, ptr %2906, align 16, !tbaa !26
  %2976 = getelementptr inbounds nuw i8, ptr %2872, i64 1568
  %2977 = load <2 x double>, ptr %2976, align 16, !tbaa !26
  %2978 = icmp eq <2 x i64> %2975, zeroinitializer
  %2979 = select <2 x i1> %2978, <2 x double> zeroinitializer, <2 x double> %2977
  %2980 = fsub <2 x double> splat (double 1.000000e+00), %2979
  %2981 = getelementptr inbounds nuw i8, ptr %2872, i64 1376
  %2982 = load <2 x double>, ptr %2981, align 16, !tbaa !26
  %2983 = fmul <2 x double> %2979, %2982
  %2984 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2980, <2 x double> %2974, <2 x double> %2983)
  %2985 = getelementptr inbounds nuw i8, ptr %2872, i64 1616
  store <2 x double> %2984, ptr %2985, align 16, !tbaa !26
  %2986 = getelementptr inbounds nuw i8, ptr %2872, i64 1552
  %2987 = load <2 x double>, ptr %2986, align 16, !tbaa !26
  %2988 = fsub <2 x double> %2982, %2974
  %2989 = fmul <2 x double> %2988, %2987
  %2990 = getelementptr inbounds nuw i8, ptr %2872, i64 1584
  store <2 x double> %2989, ptr %2990, align 16, !tbaa !26
  %2991 = getelementptr inbounds nuw i8, ptr %2872, i64 800
  %2992 = load <2 x double>, ptr %2991, align 16, !tbaa !26
  %2993 = fdiv <2 x double> %2989, %2992
  %2994 = fsub <2 x double> %2982, %2993
  %2995 = getelementptr inbounds nuw i8, ptr %2872, i64 1600
  store <2 x double> %2994, ptr %2995, align 16, !tbaa !26
  %2996 = add nuw nsw i64 %2870, 1
  %2997 = load i64, ptr %169, align 8, !tbaa !20
  %2998 = icmp slt i64 %2996, %2997
  br i1 %2998, label %2869, label %2697, !llvm.loop !109

2999:                                             ; preds = %2771, %3254
  %3000 = phi i64 [ %3296, %3254 ], [ 0, %2771 ]
  %3001 = phi <2 x double> [ %3295, %3254 ], [ zeroinitializer, %2771 ]
  %3002 = load ptr, ptr %142, align 8, !tbaa !28
  %3003 = getelementptr inbounds nuw %struct.Piece, ptr %3002, i64 %3000
  %3004 = getelementptr inbounds nuw i8, ptr %3003, i64 1408
  %3005 = load <2 x double>, ptr %3004, align 16, !tbaa !26
  %3006 = getelementptr inbounds nuw i8, ptr %3003, i64 1424
  %3007 = load <2 x double>, ptr %3006, align 16, !tbaa !26
  %3008 = fadd <2 x double> %3005, %3007
  %3009 = getelementptr inbounds nuw i8, ptr %3003, i64 1392
  %3010 = load <2 x double>, ptr %3009, align 16, !tbaa !26
  %3011 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %3012 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3011, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %3013 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3011, <2 x double> %3012, <2 x double> splat (double 0x4142F8368A3D70A4))
  %3014 = getelementptr inbounds nuw i8, ptr %3003, i64 1328
  %3015 = load <2 x double>, ptr %3014, align 16, !tbaa !26
  %3016 = getelementptr inbounds nuw i8, ptr %3003, i64 1008
  %3017 = load <2 x double>, ptr %3016, align 16, !tbaa !26
  %3018 = fneg <2 x double> %3015
  %3019 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3018, <2 x double> %3017, <2 x double> %3008)
  %3020 = getelementptr inbounds nuw i8, ptr %3003, i64 1344
  %3021 = load <2 x double>, ptr %3020, align 16, !tbaa !26
  %3022 = getelementptr inbounds nuw i8, ptr %3003, i64 1200
  %3023 = load <2 x double>, ptr %3022, align 16, !tbaa !26
  %3024 = fneg <2 x double> %3021
  %3025 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3024, <2 x double> %3023, <2 x double> %3019)
  %3026 = getelementptr inbounds nuw i8, ptr %3003, i64 1312
  %3027 = load <2 x double>, ptr %3026, align 16, !tbaa !26
  %3028 = fdiv <2 x double> %3025, %3027
  %3029 = getelementptr inbounds nuw i8, ptr %3003, i64 400
  %3030 = load <2 x double>, ptr %3029, align 16, !tbaa !26
  %3031 = fsub <2 x double> %3030, %3028
  %3032 = getelementptr inbounds nuw i8, ptr %3003, i64 976
  %3033 = load <2 x double>, ptr %3032, align 16, !tbaa !26
  %3034 = getelementptr inbounds nuw i8, ptr %3003, i64 1792
  %3035 = load <2 x double>, ptr %3034, align 16, !tbaa !26
  %3036 = fsub <2 x double> %3033, %3035
  %3037 = getelementptr inbounds nuw i8, ptr %3003, i64 1696
  %3038 = load <2 x double>, ptr %3037, align 16, !tbaa !26
  %3039 = getelementptr inbounds nuw i8, ptr %3003, i64 320
  %3040 = load <2 x double>, ptr %3039, align 16, !tbaa !26
  %3041 = fmul <2 x double> %3038, %3040
  %3042 = getelementptr inbounds nuw i8, ptr %3003, i64 1616
  %3043 = load <2 x double>, ptr %3042, align 16, !tbaa !26
  %3044 = fsub <2 x double> %3043, %3010
  %3045 = fmul <2 x double> %3041, %3044
  %3046 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3013, <2 x double> %3008, <2 x double> %3045)
  %3047 = fsub <2 x double> %3031, %3036
  %3048 = getelementptr inbounds nuw i8, ptr %3003, i64 736
  %3049 = getelementptr inbounds nuw i8, ptr %3003, i64 768
  %3050 = load <2 x double>, ptr %3049, align 16, !tbaa !26
  %3051 = fsub <2 x double> %3047, %3050
  %3052 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3051)
  %3053 = getelementptr inbounds nuw i8, ptr %3003, i64 208
  %3054 = load <2 x double>, ptr %3053, align 16, !tbaa !26
  %3055 = fdiv <2 x double> %3052, %3054
  %3056 = getelementptr inbounds nuw i8, ptr %3003, i64 1840
  %3057 = load <2 x i64>, ptr %3056, align 16, !tbaa !26
  %3058 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3057)
  %3059 = icmp eq i64 %3058, 0
  br i1 %3059, label %3254, label %3060

3060:                                             ; preds = %2999
  %3061 = getelementptr inbounds nuw i8, ptr %3003, i64 944
  %3062 = load <2 x double>, ptr %3061, align 16, !tbaa !26
  %3063 = fcmp ogt <2 x double> %3036, %3031
  %3064 = getelementptr inbounds nuw i8, ptr %3003, i64 1824
  %3065 = load <2 x double>, ptr %3064, align 16, !tbaa !26
  %3066 = fcmp oeq <2 x double> %3065, zeroinitializer
  %3067 = select <2 x i1> %3066, <2 x i1> %3063, <2 x i1> zeroinitializer
  %3068 = select <2 x i1> %3067, <2 x i64> %3057, <2 x i64> zeroinitializer
  %3069 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3068)
  %3070 = icmp eq i64 %3069, 0
  br i1 %3070, label %3141, label %3071

3071:                                             ; preds = %3060
  %3072 = fsub <2 x double> %3036, %3031
  %3073 = fdiv <2 x double> %3072, %3054
  %3074 = getelementptr inbounds nuw i8, ptr %3003, i64 1928
  %3075 = load ptr, ptr %3074, align 8, !tbaa !64
  %3076 = load i64, ptr %132, align 16, !tbaa !21
  %3077 = add nsw i64 %3076, -1
  %3078 = getelementptr inbounds <2 x double>, ptr %3075, i64 %3077
  %3079 = load <2 x double>, ptr %3078, align 16, !tbaa !26
  %3080 = icmp sgt i64 %3076, 1
  br i1 %3080, label %3081, label %3133

3081:                                             ; preds = %3071
  %3082 = getelementptr inbounds nuw i8, ptr %3003, i64 1888
  %3083 = load i64, ptr %3082, align 16, !tbaa !31
  %3084 = getelementptr inbounds nuw i8, ptr %3003, i64 1104
  %3085 = getelementptr inbounds nuw i8, ptr %3003, i64 384
  %3086 = getelementptr inbounds nuw i8, ptr %3003, i64 1984
  br label %3087

3087:                                             ; preds = %3081, %3130
  %3088 = phi <2 x double> [ %3062, %3081 ], [ %3125, %3130 ]
  %3089 = phi i64 [ %3077, %3081 ], [ %3131, %3130 ]
  %3090 = phi <2 x double> [ %3079, %3081 ], [ %3113, %3130 ]
  %3091 = phi <2 x i64> [ %3068, %3081 ], [ %3117, %3130 ]
  %3092 = phi <2 x double> [ %3073, %3081 ], [ %3124, %3130 ]
  %3093 = icmp slt i64 %3089, %3083
  br i1 %3093, label %3094, label %3100

3094:                                             ; preds = %3087
  %3095 = load ptr, ptr %3086, align 16, !tbaa !67
  %3096 = getelementptr inbounds nuw <2 x double>, ptr %3095, i64 %3089
  %3097 = load <2 x double>, ptr %3096, align 16, !tbaa !26
  %3098 = load <2 x double>, ptr %3085, align 16, !tbaa !26
  %3099 = fmul <2 x double> %3097, %3098
  br label %3108

3100:                                             ; preds = %3087
  %3101 = load <2 x double>, ptr %3084, align 16, !tbaa !26
  %3102 = load <2 x double>, ptr %3085, align 16, !tbaa !26
  %3103 = load ptr, ptr %3086, align 16, !tbaa !67
  %3104 = getelementptr inbounds nuw <2 x double>, ptr %3103, i64 %3089
  %3105 = load <2 x double>, ptr %3104, align 16, !tbaa !26
  %3106 = fsub <2 x double> %3101, %3102
  %3107 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3105, <2 x double> %3106, <2 x double> %3102)
  br label %3108

3108:                                             ; preds = %3094, %3100
  %3109 = phi <2 x double> [ %3099, %3094 ], [ %3107, %3100 ]
  %3110 = getelementptr inbounds nuw <2 x double>, ptr %3075, i64 %3089
  %3111 = load <2 x double>, ptr %3110, align 16, !tbaa !26
  %3112 = icmp eq <2 x i64> %3091, zeroinitializer
  %3113 = select <2 x i1> %3112, <2 x double> %3090, <2 x double> %3111
  %3114 = fsub <2 x double> %3088, %3109
  %3115 = fmul <2 x double> %3114, %3113
  %3116 = fcmp olt <2 x double> %3115, %3092
  %3117 = select <2 x i1> %3116, <2 x i64> %3091, <2 x i64> zeroinitializer
  %3118 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3117)
  %3119 = icmp eq i64 %3118, 0
  br i1 %3119, label %3133, label %3120

3120:                                             ; preds = %3108
  %3121 = fneg <2 x double> %3113
  %3122 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3121, <2 x double> %3114, <2 x double> %3092)
  %3123 = icmp eq <2 x i64> %3117, zeroinitializer
  %3124 = select <2 x i1> %3123, <2 x double> %3092, <2 x double> %3122
  %3125 = select <2 x i1> %3123, <2 x double> %3088, <2 x double> %3109
  %3126 = icmp eq i64 %3089, 1
  br i1 %3126, label %3127, label %3130

3127:                                             ; preds = %3120
  %3128 = load <2 x double>, ptr %3075, align 16, !tbaa !26
  %3129 = select <2 x i1> %3123, <2 x double> %3113, <2 x double> %3128
  br label %3133

3130:                                             ; preds = %3120
  %3131 = add nsw i64 %3089, -1
  %3132 = icmp sgt i64 %3089, 1
  br i1 %3132, label %3087, label %3133, !llvm.loop !110

3133:                                             ; preds = %3130, %3108, %3127, %3071
  %3134 = phi <2 x double> [ %3073, %3071 ], [ %3124, %3127 ], [ %3092, %3108 ], [ %3124, %3130 ]
  %3135 = phi <2 x double> [ %3062, %3071 ], [ %3125, %3127 ], [ %3088, %3108 ], [ %3125, %3130 ]
  %3136 = phi <2 x double> [ %3079, %3071 ], [ %3129, %3127 ], [ %3113, %3108 ], [ %3113, %3130 ]
  %3137 = fdiv <2 x double> %3134, %3136
  %3138 = fsub <2 x double> %3135, %3137
  %3139 = icmp eq <2 x i64> %3068, zeroinitializer
  %3140 = select <2 x i1> %3139, <2 x double> %3062, <2 x double> %3138
  br label %3141

3141:                                             ; preds = %3133, %3060
  %3142 = phi <2 x double> [ %3140, %3133 ], [ %3062, %3060 ]
  %3143 = load <2 x double>, ptr %3048, align 16, !tbaa !26
  %3144 = getelementptr inbounds nuw i8, ptr %3003, i64 640
  %3145 = load <2 x double>, ptr %3144, align 16, !tbaa !26
  %3146 = getelementptr inbounds nuw i8, ptr %3003, i64 656
  %3147 = load <2 x double>, ptr %3146, align 16, !tbaa !26
  %3148 = getelementptr inbounds nuw i8, ptr %3003, i64 672
  %3149 = load <2 x double>, ptr %3148, align 16, !tbaa !26
  %3150 = getelementptr inbounds nuw i8, ptr %3003, i64 688
  %3151 = load <2 x double>, ptr %3150, align 16, !tbaa !26
  %3152 = load <2 x double>, ptr %3003, align 16, !tbaa !26
  %3153 = fmul <2 x double> %3152, splat (double 1.000000e-09)
  %3154 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3143, <2 x double> %3151, <2 x double> %3149)
  %3155 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3143, <2 x double> %3154, <2 x double> %3147)
  %3156 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3143, <2 x double> %3155, <2 x double> %3145)
  %3157 = fsub <2 x double> %3156, %3142
  %3158 = fmul <2 x double> %3143, splat (double 3.000000e+00)
  %3159 = fmul <2 x double> %3158, %3151
  %3160 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3149, <2 x double> splat (double 2.000000e+00), <2 x double> %3159)
  %3161 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3143, <2 x double> %3160, <2 x double> %3147)
  %3162 = fdiv <2 x double> %3157, %3161
  %3163 = fsub <2 x double> %3143, %3162
  %3164 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3162)
  %3165 = fcmp oge <2 x double> %3164, %3153
  %3166 = bitcast <2 x i1> %3165 to i2
  %3167 = icmp eq i2 %3166, 0
  br i1 %3167, label %3214, label %3168, !llvm.loop !111

3168:                                             ; preds = %3141
  %3169 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3163, <2 x double> %3151, <2 x double> %3149)
  %3170 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3163, <2 x double> %3169, <2 x double> %3147)
  %3171 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3163, <2 x double> %3170, <2 x double> %3145)
  %3172 = fsub <2 x double> %3171, %3142
  %3173 = fmul <2 x double> %3163, splat (double 3.000000e+00)
  %3174 = fmul <2 x double> %3173, %3151
  %3175 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3149, <2 x double> splat (double 2.000000e+00), <2 x double> %3174)
  %3176 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3163, <2 x double> %3175, <2 x double> %3147)
  %3177 = fdiv <2 x double> %3172, %3176
  %3178 = fsub <2 x double> %3163, %3177
  %3179 = select <2 x i1> %3165, <2 x double> %3178, <2 x double> %3163
  %3180 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3177)
  %3181 = fcmp oge <2 x double> %3180, %3153
  %3182 = and <2 x i1> %3181, %3165
  %3183 = bitcast <2 x i1> %3182 to i2
  %3184 = icmp eq i2 %3183, 0
  br i1 %3184, label %3214, label %3185, !llvm.loop !111

3185:                                             ; preds = %3168
  %3186 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3179, <2 x double> %3151, <2 x double> %3149)
  %3187 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3179, <2 x double> %3186, <2 x double> %3147)
  %3188 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3179, <2 x double> %3187, <2 x double> %3145)
  %3189 = fsub <2 x double> %3188, %3142
  %3190 = fmul <2 x double> %3179, splat (double 3.000000e+00)
  %3191 = fmul <2 x double> %3190, %3151
  %3192 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3149, <2 x double> splat (double 2.000000e+00), <2 x double> %3191)
  %3193 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3179, <2 x double> %3192, <2 x double> %3147)
  %3194 = fdiv <2 x double> %3189, %3193
  %3195 = fsub <2 x double> %3179, %3194
  %3196 = select <2 x i1> %3182, <2 x double> %3195, <2 x double> %3179
  %3197 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3194)
  %3198 = fcmp oge <2 x double> %3197, %3153
  %3199 = and <2 x i1> %3198, %3182
  %3200 = bitcast <2 x i1> %3199 to i2
  %3201 = icmp eq i2 %3200, 0
  br i1 %3201, label %3214, label %3202, !llvm.loop !111

3202:                                             ; preds = %3185
  %3203 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3196, <2 x double> %3151, <2 x double> %3149)
  %3204 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3196, <2 x double> %3203, <2 x double> %3147)
  %3205 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3196, <2 x double> %3204, <2 x double> %3145)
  %3206 = fsub <2 x double> %3205, %3142
  %3207 = fmul <2 x double> %3196, splat (double 3.000000e+00)
  %3208 = fmul <2 x double> %3207, %3151
  %3209 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3149, <2 x double> splat (double 2.000000e+00), <2 x double> %3208)
  %3210 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3196, <2 x double> %3209, <2 x double> %3147)
  %3211 = fdiv <2 x double> %3206, %3210
  %3212 = fsub <2 x double> %3196, %3211
  %3213 = select <2 x i1> %3199, <2 x double> %3212, <2 x double> %3196
  br label %3214

3214:                                             ; preds = %3202, %3185, %3168, %3141
  %3215 = phi <2 x double> [ %3163, %3141 ], [ %3179, %3168 ], [ %3196, %3185 ], [ %3213, %3202 ]
  %3216 = fmul <2 x double> %3152, splat (double 2.800000e-01)
  %3217 = fcmp ogt <2 x double> %3215, %3216
  %3218 = select <2 x i1> %3217, <2 x double> %3215, <2 x double> %3216
  %3219 = fcmp olt <2 x double> %3218, %3152
  %3220 = select <2 x i1> %3219, <2 x double> %3218, <2 x double> %3152
  %3221 = fcmp olt <2 x double> %3036, %3031
  %3222 = icmp eq <2 x i64> %3057, zeroinitializer
  %3223 = select <2 x i1> %3222, <2 x i1> splat (i1 true), <2 x i1> %3221
  %3224 = select <2 x i1> %3223, <2 x double> %3036, <2 x double> %3031
  %3225 = fsub <2 x double> %3220, %3143
  %3226 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3225)
  %3227 = select <2 x i1> %3222, <2 x double> %3055, <2 x double> %3226
  %3228 = select <2 x i1> %3222, <2 x double> %3143, <2 x double> %3220
  store <2 x double> %3228, ptr %3048, align 16, !tbaa !26
  %3229 = getelementptr inbounds nuw i8, ptr %3003, i64 752
  %3230 = load <2 x double>, ptr %3229, align 16, !tbaa !26
  %3231 = select <2 x i1> %3222, <2 x double> %3230, <2 x double> %3142
  store <2 x double> %3231, ptr %3229, align 16, !tbaa !26
  %3232 = getelementptr inbounds nuw i8, ptr %3003, i64 1680
  %3233 = load <2 x double>, ptr %3232, align 16, !tbaa !26
  %3234 = fmul <2 x double> %3233, splat (double 2.000000e+00)
  %3235 = getelementptr inbounds nuw i8, ptr %3003, i64 96
  %3236 = load <2 x double>, ptr %3235, align 16, !tbaa !26
  %3237 = getelementptr inbounds nuw i8, ptr %3003, i64 112
  %3238 = load <2 x double>, ptr %3237, align 16, !tbaa !26
  %3239 = getelementptr inbounds nuw i8, ptr %3003, i64 128
  %3240 = load <2 x double>, ptr %3239, align 16, !tbaa !26
  %3241 = fmul <2 x double> %3010, %3240
  %3242 = fmul <2 x double> %3241, splat (double 0x3FD5555555555555)
  %3243 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3238, <2 x double> splat (double 5.000000e-01), <2 x double> %3242)
  %3244 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3010, <2 x double> %3243, <2 x double> %3236)
  %3245 = fmul <2 x double> %3010, %3244
  %3246 = getelementptr inbounds nuw i8, ptr %3003, i64 192
  %3247 = load <2 x double>, ptr %3246, align 16, !tbaa !26
  %3248 = fneg <2 x double> %3247
  %3249 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3248, <2 x double> %3010, <2 x double> %3245)
  %3250 = fmul <2 x double> %3234, %3249
  %3251 = fsub <2 x double> %3046, %3250
  %3252 = select <2 x i1> %3222, <2 x double> %3046, <2 x double> %3251
  %3253 = fsub <2 x double> %3031, %3224
  br label %3254

3254:                                             ; preds = %2999, %3214
  %3255 = phi <2 x double> [ %3047, %2999 ], [ %3253, %3214 ]
  %3256 = phi <2 x double> [ %3055, %2999 ], [ %3227, %3214 ]
  %3257 = phi <2 x double> [ %3036, %2999 ], [ %3224, %3214 ]
  %3258 = phi <2 x double> [ %3046, %2999 ], [ %3252, %3214 ]
  store <2 x double> %3255, ptr %3049, align 16, !tbaa !26
  %3259 = getelementptr inbounds nuw i8, ptr %3003, i64 784
  store <2 x double> %3257, ptr %3259, align 16, !tbaa !26
  %3260 = getelementptr inbounds nuw i8, ptr %3003, i64 816
  store <2 x double> %3028, ptr %3260, align 16, !tbaa !26
  %3261 = getelementptr inbounds nuw i8, ptr %3003, i64 864
  store <2 x double> %3005, ptr %3261, align 16, !tbaa !26
  %3262 = getelementptr inbounds nuw i8, ptr %3003, i64 880
  store <2 x double> %3010, ptr %3262, align 16, !tbaa !26
  %3263 = getelementptr inbounds nuw i8, ptr %3003, i64 1744
  %3264 = load <2 x double>, ptr %3263, align 16, !tbaa !26
  %3265 = getelementptr inbounds nuw i8, ptr %3003, i64 1760
  %3266 = load <2 x double>, ptr %3265, align 16, !tbaa !26
  %3267 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3264, <2 x double> %3010, <2 x double> %3266)
  %3268 = getelementptr inbounds nuw i8, ptr %3003, i64 1584
  %3269 = load <2 x double>, ptr %3268, align 16, !tbaa !26
  %3270 = getelementptr inbounds nuw i8, ptr %3003, i64 1024
  %3271 = load <2 x double>, ptr %3270, align 16, !tbaa !26
  %3272 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3018, <2 x double> %3271, <2 x double> %3269)
  %3273 = getelementptr inbounds nuw i8, ptr %3003, i64 1216
  %3274 = load <2 x double>, ptr %3273, align 16, !tbaa !26
  %3275 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3024, <2 x double> %3274, <2 x double> %3272)
  %3276 = fdiv <2 x double> %3275, %3027
  %3277 = getelementptr inbounds nuw i8, ptr %3003, i64 832
  store <2 x double> %3276, ptr %3277, align 16, !tbaa !26
  %3278 = getelementptr inbounds nuw i8, ptr %3003, i64 1040
  %3279 = load <2 x double>, ptr %3278, align 16, !tbaa !26
  %3280 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3018, <2 x double> %3279, <2 x double> %3258)
  %3281 = getelementptr inbounds nuw i8, ptr %3003, i64 1232
  %3282 = load <2 x double>, ptr %3281, align 16, !tbaa !26
  %3283 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3024, <2 x double> %3282, <2 x double> %3280)
  %3284 = fdiv <2 x double> %3283, %3027
  %3285 = getelementptr inbounds nuw i8, ptr %3003, i64 848
  store <2 x double> %3284, ptr %3285, align 16, !tbaa !26
  %3286 = getelementptr inbounds nuw i8, ptr %3003, i64 1088
  %3287 = load <2 x double>, ptr %3286, align 16, !tbaa !26
  %3288 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3018, <2 x double> %3287, <2 x double> %3267)
  %3289 = getelementptr inbounds nuw i8, ptr %3003, i64 1280
  %3290 = load <2 x double>, ptr %3289, align 16, !tbaa !26
  %3291 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3024, <2 x double> %3290, <2 x double> %3288)
  %3292 = fdiv <2 x double> %3291, %3027
  %3293 = getelementptr inbounds nuw i8, ptr %3003, i64 896
  store <2 x double> %3292, ptr %3293, align 16, !tbaa !26
  %3294 = fcmp ogt <2 x double> %3001, %3256
  %3295 = select <2 x i1> %3294, <2 x double> %3001, <2 x double> %3256
  %3296 = add nuw nsw i64 %3000, 1
  %3297 = load i64, ptr %169, align 8, !tbaa !20
  %3298 = icmp slt i64 %3296, %3297
  br i1 %3298, label %2999, label %3299, !llvm.loop !112

3299:                                             ; preds = %3254, %2771
  %3300 = phi <2 x double> [ zeroinitializer, %2771 ], [ %3295, %3254 ]
  %3301 = load <2 x double>, ptr %180, align 16, !tbaa !26
  %3302 = fadd <2 x double> %3301, splat (double 1.000000e+00)
  store <2 x double> %3302, ptr %180, align 16, !tbaa !26
  %3303 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %3304 = load <2 x double>, ptr %217, align 16, !tbaa !26
  %3305 = fcmp olt <2 x double> %3300, %3304
  %3306 = load i64, ptr %218, align 16, !tbaa !24
  %3307 = sitofp i64 %3306 to double
  %3308 = insertelement <2 x double> poison, double %3307, i64 0
  %3309 = shufflevector <2 x double> %3308, <2 x double> poison, <2 x i32> zeroinitializer
  %3310 = fcmp oge <2 x double> %3302, %3309
  %3311 = or <2 x i1> %3305, %3310
  %3312 = select <2 x i1> %3311, <2 x i64> %3303, <2 x i64> zeroinitializer
  store <2 x i64> %3312, ptr %146, align 16, !tbaa !26
  %3313 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3312)
  %3314 = icmp eq i64 %3313, 0
  br i1 %3314, label %527, label %3315, !llvm.loop !54

3315:                                             ; preds = %3299
  %3316 = load i64, ptr %169, align 8, !tbaa !20
  %3317 = icmp sgt i64 %3316, 0
  br i1 %3317, label %3318, label %3320

3318:                                             ; preds = %3315
  %3319 = icmp eq <2 x i64> %3312, zeroinitializer
  br label %3641

3320:                                             ; preds = %3689, %3315
  %3321 = phi i64 [ %3316, %3315 ], [ %3695, %3689 ]
  %3322 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %3323 = fadd <2 x double> %3322, splat (double 1.000000e+00)
  %3324 = icmp eq <2 x i64> %3312, zeroinitializer
  %3325 = select <2 x i1> %3324, <2 x double> %3322, <2 x double> %3323
  store <2 x double> %3325, ptr %174, align 16, !tbaa !26
  %3326 = fcmp ogt <2 x double> %3325, splat (double 4.000000e+01)
  %3327 = select <2 x i1> %3326, <2 x i64> %3312, <2 x i64> zeroinitializer
  %3328 = xor <2 x i64> %3327, %3312
  %3329 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %3330 = fadd <2 x double> %3329, splat (double 1.000000e+00)
  %3331 = icmp eq <2 x i64> %3327, zeroinitializer
  %3332 = select <2 x i1> %3331, <2 x double> %3329, <2 x double> %3330
  store <2 x double> %3332, ptr %140, align 16, !tbaa !26
  %3333 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %3334 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %3335 = fsub <2 x double> %3333, %3334
  %3336 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3335)
  %3337 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %3338 = fmul <2 x double> %3337, splat (double 1.500000e+00)
  %3339 = fcmp ogt <2 x double> %3336, %3338
  %3340 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %3341 = fcmp ogt <2 x double> %3340, splat (double 2.000000e-03)
  %3342 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %3343 = fcmp oeq <2 x double> %3342, zeroinitializer
  %3344 = and <2 x i1> %3339, %3343
  %3345 = and <2 x i1> %3341, %3344
  %3346 = fdiv <2 x double> %3337, %3336
  %3347 = select <2 x i1> %3345, <2 x i64> %3328, <2 x i64> zeroinitializer
  %3348 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %3349 = fcmp ogt <2 x double> %3348, %3340
  %3350 = select <2 x i1> %3349, <2 x double> %3348, <2 x double> %3340
  %3351 = select <2 x i1> %3345, <2 x double> zeroinitializer, <2 x double> %3350
  %3352 = icmp eq <2 x i64> %3347, zeroinitializer
  %3353 = select <2 x i1> %3352, <2 x double> %3348, <2 x double> %3351
  store <2 x double> %3353, ptr %172, align 16, !tbaa !26
  %3354 = fcmp ogt <2 x double> %3346, splat (double 5.000000e-02)
  %3355 = select <2 x i1> %3354, <2 x double> %3346, <2 x double> splat (double 5.000000e-02)
  %3356 = fcmp olt <2 x double> %3355, splat (double 0x3FEE666666666666)
  %3357 = select <2 x i1> %3356, <2 x double> %3355, <2 x double> splat (double 0x3FEE666666666666)
  %3358 = fmul <2 x double> %3340, %3357
  %3359 = fcmp ogt <2 x double> %3358, splat (double 0x3EB0C6F7A0B5ED8D)
  %3360 = select <2 x i1> %3359, <2 x double> %3358, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3361 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %3362 = select <2 x i1> %3352, <2 x double> %3361, <2 x double> %3360
  store <2 x double> %3362, ptr %152, align 16, !tbaa !26
  %3363 = load <2 x double>, ptr %137, align 16, !tbaa !26
  %3364 = fadd <2 x double> %3363, splat (double 1.000000e+00)
  %3365 = select <2 x i1> %3352, <2 x double> %3363, <2 x double> %3364
  store <2 x double> %3365, ptr %137, align 16, !tbaa !26
  %3366 = xor <2 x i64> %3347, %3328
  %3367 = icmp sgt i64 %3321, 0
  br i1 %3367, label %3368, label %3466

3368:                                             ; preds = %3320
  %3369 = load ptr, ptr %142, align 8, !tbaa !28
  %3370 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %3371 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %3372 = fcmp une <2 x double> %3370, %3371
  %3373 = fcmp ule <2 x double> %3370, zeroinitializer
  %3374 = or <2 x i1> %3373, %3372
  %3375 = fcmp ogt <2 x double> %3340, splat (double 0x3E7AD7F29ABCAF48)
  %3376 = fcmp ogt <2 x double> %3340, splat (double 1.000000e-05)
  %3377 = fcmp ogt <2 x double> %3340, splat (double 1.000000e-04)
  br label %3378

3378:                                             ; preds = %3368, %3378
  %3379 = phi i64 [ 0, %3368 ], [ %3462, %3378 ]
  %3380 = phi <2 x i64> [ zeroinitializer, %3368 ], [ %3458, %3378 ]
  %3381 = phi <2 x i64> [ zeroinitializer, %3368 ], [ %3409, %3378 ]
  %3382 = phi <2 x double> [ splat (double 1.000000e+00), %3368 ], [ %3461, %3378 ]
  %3383 = getelementptr inbounds nuw %struct.Piece, ptr %3369, i64 %3379
  %3384 = getelementptr inbounds nuw i8, ptr %3383, i64 768
  %3385 = load <2 x double>, ptr %3384, align 16, !tbaa !26
  %3386 = getelementptr inbounds nuw i8, ptr %3383, i64 960
  %3387 = load <2 x double>, ptr %3386, align 16, !tbaa !26
  %3388 = getelementptr inbounds nuw i8, ptr %3383, i64 1840
  %3389 = load <2 x i64>, ptr %3388, align 16, !tbaa !26
  %3390 = xor <2 x i64> %3389, splat (i64 -1)
  %3391 = getelementptr inbounds nuw i8, ptr %3383, i64 224
  %3392 = load <2 x double>, ptr %3391, align 16, !tbaa !26
  %3393 = fmul <2 x double> %3392, splat (double 1.000000e-03)
  %3394 = fcmp ogt <2 x double> %3393, splat (double 0x3E7AD7F29ABCAF48)
  %3395 = fneg <2 x double> %3393
  %3396 = select <2 x i1> %3394, <2 x double> %3395, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3397 = fcmp olt <2 x double> %3385, %3396
  %3398 = select <2 x i1> %3397, <2 x i1> %3374, <2 x i1> zeroinitializer
  %3399 = select <2 x i1> %3398, <2 x i64> %3390, <2 x i64> zeroinitializer
  %3400 = fcmp ole <2 x double> %3387, zeroinitializer
  %3401 = select <2 x i1> %3400, <2 x i64> %3399, <2 x i64> zeroinitializer
  %3402 = getelementptr inbounds nuw i8, ptr %3383, i64 208
  %3403 = load <2 x double>, ptr %3402, align 16, !tbaa !26
  %3404 = fmul <2 x double> %3403, splat (double -3.000000e-07)
  %3405 = fcmp olt <2 x double> %3385, %3404
  %3406 = select <2 x i1> %3375, <2 x i1> %3405, <2 x i1> zeroinitializer
  %3407 = select <2 x i1> %3406, <2 x i64> %3401, <2 x i64> zeroinitializer
  %3408 = or <2 x i64> %3407, %3380
  %3409 = or <2 x i64> %3407, %3381
  %3410 = fcmp olt <2 x double> %3382, splat (double 3.000000e-01)
  %3411 = icmp eq <2 x i64> %3407, zeroinitializer
  %3412 = select <2 x i1> %3411, <2 x i1> splat (i1 true), <2 x i1> %3410
  %3413 = select <2 x i1> %3412, <2 x double> %3382, <2 x double> splat (double 3.000000e-01)
  %3414 = xor <2 x i64> %3401, splat (i64 -1)
  %3415 = and <2 x i64> %3399, %3414
  %3416 = select <2 x i1> %3376, <2 x i64> %3415, <2 x i64> zeroinitializer
  %3417 = fsub <2 x double> %3387, %3385
  %3418 = fdiv <2 x double> %3387, %3417
  %3419 = or <2 x i64> %3408, %3416
  %3420 = fcmp olt <2 x double> %3413, %3418
  %3421 = icmp eq <2 x i64> %3416, zeroinitializer
  %3422 = select <2 x i1> %3421, <2 x i1> splat (i1 true), <2 x i1> %3420
  %3423 = select <2 x i1> %3422, <2 x double> %3413, <2 x double> %3418
  %3424 = getelementptr inbounds nuw i8, ptr %3383, i64 944
  %3425 = load <2 x double>, ptr %3424, align 16, !tbaa !26
  %3426 = getelementptr inbounds nuw i8, ptr %3383, i64 752
  %3427 = load <2 x double>, ptr %3426, align 16, !tbaa !26
  %3428 = getelementptr inbounds nuw i8, ptr %3383, i64 1824
  %3429 = load <2 x double>, ptr %3428, align 16, !tbaa !26
  %3430 = fcmp oeq <2 x double> %3429, zeroinitializer
  %3431 = getelementptr inbounds nuw i8, ptr %3383, i64 368
  %3432 = load <2 x double>, ptr %3431, align 16, !tbaa !26
  %3433 = fmul <2 x double> %3432, splat (double 0x3FEFF7CED916872B)
  %3434 = fcmp olt <2 x double> %3427, %3433
  %3435 = and <2 x i1> %3430, %3434
  %3436 = and <2 x i1> %3377, %3435
  %3437 = fsub <2 x double> %3425, %3432
  %3438 = fsub <2 x double> %3425, %3427
  %3439 = fdiv <2 x double> %3437, %3438
  %3440 = fcmp uge <2 x double> %3423, %3439
  %3441 = select <2 x i1> %3436, <2 x i1> %3440, <2 x i1> zeroinitializer
  %3442 = select <2 x i1> %3441, <2 x double> %3439, <2 x double> %3423
  %3443 = fcmp oeq <2 x double> %3429, splat (double 1.000000e+00)
  %3444 = getelementptr inbounds nuw i8, ptr %3383, i64 816
  %3445 = load <2 x double>, ptr %3444, align 16, !tbaa !26
  %3446 = getelementptr inbounds nuw i8, ptr %3383, i64 400
  %3447 = load <2 x double>, ptr %3446, align 16, !tbaa !26
  %3448 = fmul <2 x double> %3447, splat (double 1.000100e+00)
  %3449 = fcmp ogt <2 x double> %3445, %3448
  %3450 = and <2 x i1> %3443, %3449
  %3451 = and <2 x i1> %3377, %3450
  %3452 = getelementptr inbounds nuw i8, ptr %3383, i64 1008
  %3453 = load <2 x double>, ptr %3452, align 16, !tbaa !26
  %3454 = fsub <2 x double> %3447, %3453
  %3455 = fsub <2 x double> %3445, %3453
  %3456 = fdiv <2 x double> %3454, %3455
  %3457 = select <2 x i1> %3450, <2 x i1> %3377, <2 x i1> %3436
  %3458 = select <2 x i1> %3457, <2 x i64> splat (i64 -1), <2 x i64> %3419
  %3459 = fcmp uge <2 x double> %3442, %3456
  %3460 = select <2 x i1> %3451, <2 x i1> %3459, <2 x i1> zeroinitializer
  %3461 = select <2 x i1> %3460, <2 x double> %3456, <2 x double> %3442
  %3462 = add nuw nsw i64 %3379, 1
  %3463 = icmp eq i64 %3462, %3321
  br i1 %3463, label %3464, label %3378, !llvm.loop !113

3464:                                             ; preds = %3378
  %3465 = icmp eq <2 x i64> %3409, zeroinitializer
  br label %3466

3466:                                             ; preds = %3464, %3320
  %3467 = phi <2 x double> [ splat (double 1.000000e+00), %3320 ], [ %3461, %3464 ]
  %3468 = phi <2 x i1> [ splat (i1 true), %3320 ], [ %3465, %3464 ]
  %3469 = phi <2 x i64> [ zeroinitializer, %3320 ], [ %3458, %3464 ]
  %3470 = and <2 x i64> %3469, %3366
  %3471 = fcmp ogt <2 x double> %3353, %3340
  %3472 = select <2 x i1> %3471, <2 x double> %3353, <2 x double> %3340
  %3473 = select <2 x i1> %3468, <2 x double> %3472, <2 x double> zeroinitializer
  %3474 = icmp eq <2 x i64> %3470, zeroinitializer
  %3475 = select <2 x i1> %3474, <2 x double> %3353, <2 x double> %3473
  %3476 = fcmp ogt <2 x double> %3467, splat (double 5.000000e-02)
  %3477 = select <2 x i1> %3476, <2 x double> %3467, <2 x double> splat (double 5.000000e-02)
  %3478 = fcmp olt <2 x double> %3477, splat (double 0x3FEE666666666666)
  %3479 = select <2 x i1> %3478, <2 x double> %3477, <2 x double> splat (double 0x3FEE666666666666)
  %3480 = fmul <2 x double> %3340, %3479
  %3481 = fcmp ogt <2 x double> %3480, splat (double 0x3EB0C6F7A0B5ED8D)
  %3482 = select <2 x i1> %3481, <2 x double> %3480, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3483 = select <2 x i1> %3474, <2 x double> %3362, <2 x double> %3482
  %3484 = fadd <2 x double> %3365, splat (double 1.000000e+00)
  %3485 = select <2 x i1> %3474, <2 x double> %3365, <2 x double> %3484
  %3486 = xor <2 x i64> %3470, %3366
  %3487 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %3488 = fmul <2 x double> %3487, splat (double 5.000000e-01)
  %3489 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %3490 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %3491 = fneg <2 x double> %3488
  %3492 = icmp eq <2 x i64> %3490, zeroinitializer
  %3493 = select <2 x i1> %3492, <2 x double> %3491, <2 x double> %3488
  %3494 = fadd <2 x double> %3489, %3493
  %3495 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %3496 = fsub <2 x double> %3495, %3494
  %3497 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %3498 = fsub <2 x double> %3497, %3494
  %3499 = fneg <2 x double> %3496
  %3500 = select <2 x i1> %3492, <2 x double> %3499, <2 x double> %3496
  %3501 = fneg <2 x double> %3498
  %3502 = select <2 x i1> %3492, <2 x double> %3501, <2 x double> %3498
  %3503 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %3504 = fcmp oeq <2 x double> %3503, zeroinitializer
  %3505 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %3506 = fcmp oeq <2 x double> %3505, zeroinitializer
  %3507 = and <2 x i1> %3504, %3506
  %3508 = fcmp olt <2 x double> %3500, splat (double -4.000000e-03)
  %3509 = and <2 x i1> %3507, %3508
  %3510 = fcmp ogt <2 x double> %3502, splat (double 4.000000e-03)
  %3511 = and <2 x i1> %3510, %3509
  %3512 = and <2 x i1> %3341, %3511
  %3513 = fsub <2 x double> %3500, %3502
  %3514 = fdiv <2 x double> %3500, %3513
  %3515 = select <2 x i1> %3512, <2 x i64> %3486, <2 x i64> zeroinitializer
  %3516 = fcmp ogt <2 x double> %3475, %3340
  %3517 = icmp eq <2 x i64> %3515, zeroinitializer
  %3518 = select <2 x i1> %3517, <2 x i1> splat (i1 true), <2 x i1> %3516
  %3519 = select <2 x i1> %3518, <2 x double> %3475, <2 x double> %3340
  store <2 x double> %3519, ptr %172, align 16, !tbaa !26
  %3520 = fcmp ogt <2 x double> %3514, splat (double 5.000000e-02)
  %3521 = select <2 x i1> %3520, <2 x double> %3514, <2 x double> splat (double 5.000000e-02)
  %3522 = fcmp olt <2 x double> %3521, splat (double 0x3FEE666666666666)
  %3523 = select <2 x i1> %3522, <2 x double> %3521, <2 x double> splat (double 0x3FEE666666666666)
  %3524 = fmul <2 x double> %3340, %3523
  %3525 = fcmp ogt <2 x double> %3524, splat (double 0x3EB0C6F7A0B5ED8D)
  %3526 = select <2 x i1> %3525, <2 x double> %3524, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3527 = select <2 x i1> %3517, <2 x double> %3483, <2 x double> %3526
  store <2 x double> %3527, ptr %152, align 16, !tbaa !26
  %3528 = fadd <2 x double> %3485, splat (double 1.000000e+00)
  %3529 = select <2 x i1> %3517, <2 x double> %3485, <2 x double> %3528
  store <2 x double> %3529, ptr %137, align 16, !tbaa !26
  %3530 = xor <2 x i64> %3515, %3486
  %3531 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %3532 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %3533 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %3534 = fsub <2 x double> %3532, %3533
  %3535 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %3536 = fcmp une <2 x double> %3535, splat (double 1.000000e+00)
  %3537 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %3538 = fsub <2 x double> %3495, %3537
  %3539 = select <2 x i1> %3536, <2 x double> splat (double -1.000000e+00), <2 x double> %3538
  %3540 = fcmp une <2 x double> %3535, splat (double 2.000000e+00)
  %3541 = fsub <2 x double> %3531, %3537
  %3542 = select <2 x i1> %3540, <2 x double> %3539, <2 x double> %3541
  %3543 = fcmp une <2 x double> %3535, splat (double 3.000000e+00)
  %3544 = fsub <2 x double> %3534, %3537
  %3545 = select <2 x i1> %3543, <2 x double> %3542, <2 x double> %3544
  %3546 = fcmp une <2 x double> %3535, splat (double 4.000000e+00)
  %3547 = fsub <2 x double> %3537, %3534
  %3548 = select <2 x i1> %3546, <2 x double> %3545, <2 x double> %3547
  br i1 %3367, label %3549, label %3597

3549:                                             ; preds = %3466
  %3550 = load ptr, ptr %142, align 8, !tbaa !28
  %3551 = and i64 %3321, 3
  %3552 = icmp ult i64 %3321, 4
  br i1 %3552, label %3581, label %3553

3553:                                             ; preds = %3549
  %3554 = and i64 %3321, 9223372036854775804
  br label %3555

3555:                                             ; preds = %3555, %3553
  %3556 = phi i64 [ 0, %3553 ], [ %3578, %3555 ]
  %3557 = phi <2 x double> [ splat (double 1.000000e+09), %3553 ], [ %3577, %3555 ]
  %3558 = phi i64 [ 0, %3553 ], [ %3579, %3555 ]
  %3559 = getelementptr inbounds nuw %struct.Piece, ptr %3550, i64 %3556, i32 35
  %3560 = load <2 x double>, ptr %3559, align 16, !tbaa !26
  %3561 = fcmp olt <2 x double> %3557, %3560
  %3562 = select <2 x i1> %3561, <2 x double> %3557, <2 x double> %3560
  %3563 = or disjoint i64 %3556, 1
  %3564 = getelementptr inbounds nuw %struct.Piece, ptr %3550, i64 %3563, i32 35
  %3565 = load <2 x double>, ptr %3564, align 16, !tbaa !26
  %3566 = fcmp olt <2 x double> %3562, %3565
  %3567 = select <2 x i1> %3566, <2 x double> %3562, <2 x double> %3565
  %3568 = or disjoint i64 %3556, 2
  %3569 = getelementptr inbounds nuw %struct.Piece, ptr %3550, i64 %3568, i32 35
  %3570 = load <2 x double>, ptr %3569, align 16, !tbaa !26
  %3571 = fcmp olt <2 x double> %3567, %3570
  %3572 = select <2 x i1> %3571, <2 x double> %3567, <2 x double> %3570
  %3573 = or disjoint i64 %3556, 3
  %3574 = getelementptr inbounds nuw %struct.Piece, ptr %3550, i64 %3573, i32 35
  %3575 = load <2 x double>, ptr %3574, align 16, !tbaa !26
  %3576 = fcmp olt <2 x double> %3572, %3575
  %3577 = select <2 x i1> %3576, <2 x double> %3572, <2 x double> %3575
  %3578 = add nuw nsw i64 %3556, 4
  %3579 = add i64 %3558, 4
  %3580 = icmp eq i64 %3579, %3554
  br i1 %3580, label %3581, label %3555, !llvm.loop !114

3581:                                             ; preds = %3555, %3549
  %3582 = phi <2 x double> [ poison, %3549 ], [ %3577, %3555 ]
  %3583 = phi i64 [ 0, %3549 ], [ %3578, %3555 ]
  %3584 = phi <2 x double> [ splat (double 1.000000e+09), %3549 ], [ %3577, %3555 ]
  %3585 = icmp eq i64 %3551, 0
  br i1 %3585, label %3597, label %3586

3586:                                             ; preds = %3581, %3586
  %3587 = phi i64 [ %3594, %3586 ], [ %3583, %3581 ]
  %3588 = phi <2 x double> [ %3593, %3586 ], [ %3584, %3581 ]
  %3589 = phi i64 [ %3595, %3586 ], [ 0, %3581 ]
  %3590 = getelementptr inbounds nuw %struct.Piece, ptr %3550, i64 %3587, i32 35
  %3591 = load <2 x double>, ptr %3590, align 16, !tbaa !26
  %3592 = fcmp olt <2 x double> %3588, %3591
  %3593 = select <2 x i1> %3592, <2 x double> %3588, <2 x double> %3591
  %3594 = add nuw nsw i64 %3587, 1
  %3595 = add i64 %3589, 1
  %3596 = icmp eq i64 %3595, %3551
  br i1 %3596, label %3597, label %3586, !llvm.loop !115

3597:                                             ; preds = %3581, %3586, %3466
  %3598 = phi <2 x double> [ splat (double 1.000000e+09), %3466 ], [ %3582, %3581 ], [ %3593, %3586 ]
  %3599 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %3600 = fsub <2 x double> %3599, %3533
  %3601 = fsub <2 x double> %3497, %3537
  %3602 = select <2 x i1> %3536, <2 x double> splat (double -1.000000e+00), <2 x double> %3601
  %3603 = fsub <2 x double> %3598, %3537
  %3604 = select <2 x i1> %3540, <2 x double> %3602, <2 x double> %3603
  %3605 = fsub <2 x double> %3600, %3537
  %3606 = select <2 x i1> %3543, <2 x double> %3604, <2 x double> %3605
  %3607 = fsub <2 x double> %3537, %3600
  %3608 = select <2 x i1> %3546, <2 x double> %3606, <2 x double> %3607
  %3609 = fcmp une <2 x double> %3535, zeroinitializer
  %3610 = fcmp oge <2 x double> %3340, splat (double 5.000000e-02)
  %3611 = and <2 x i1> %3610, %3609
  %3612 = fcmp olt <2 x double> %3548, zeroinitializer
  %3613 = and <2 x i1> %3611, %3612
  %3614 = fsub <2 x double> %3608, %3548
  %3615 = fmul <2 x double> %3614, splat (double 2.000000e-02)
  %3616 = fcmp ogt <2 x double> %3608, %3615
  %3617 = and <2 x i1> %3613, %3616
  %3618 = fsub <2 x double> %3548, %3608
  %3619 = fdiv <2 x double> %3548, %3618
  %3620 = fcmp olt <2 x double> %3619, splat (double 0x3FEE666666666666)
  %3621 = and <2 x i1> %3620, %3617
  %3622 = select <2 x i1> %3621, <2 x i64> %3530, <2 x i64> zeroinitializer
  %3623 = fcmp ogt <2 x double> %3519, %3340
  %3624 = icmp eq <2 x i64> %3622, zeroinitializer
  %3625 = select <2 x i1> %3624, <2 x i1> splat (i1 true), <2 x i1> %3623
  %3626 = select <2 x i1> %3625, <2 x double> %3519, <2 x double> %3340
  store <2 x double> %3626, ptr %172, align 16, !tbaa !26
  %3627 = fcmp ogt <2 x double> %3619, splat (double 5.000000e-02)
  %3628 = select <2 x i1> %3627, <2 x double> %3619, <2 x double> splat (double 5.000000e-02)
  %3629 = fcmp olt <2 x double> %3628, splat (double 0x3FEE666666666666)
  %3630 = select <2 x i1> %3629, <2 x double> %3628, <2 x double> splat (double 0x3FEE666666666666)
  %3631 = fmul <2 x double> %3340, %3630
  %3632 = fcmp ogt <2 x double> %3631, splat (double 0x3EB0C6F7A0B5ED8D)
  %3633 = select <2 x i1> %3632, <2 x double> %3631, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3634 = select <2 x i1> %3624, <2 x double> %3527, <2 x double> %3633
  store <2 x double> %3634, ptr %152, align 16, !tbaa !26
  %3635 = fadd <2 x double> %3529, splat (double 1.000000e+00)
  %3636 = select <2 x i1> %3624, <2 x double> %3529, <2 x double> %3635
  store <2 x double> %3636, ptr %137, align 16, !tbaa !26
  %3637 = xor <2 x i64> %3622, %3530
  %3638 = or <2 x i64> %3637, %3327
  %3639 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3638)
  %3640 = icmp eq i64 %3639, 0
  br i1 %3640, label %527, label %3697

3641:                                             ; preds = %3318, %3689
  %3642 = phi i64 [ 0, %3318 ], [ %3694, %3689 ]
  %3643 = load ptr, ptr %142, align 8, !tbaa !28
  %3644 = getelementptr inbounds nuw %struct.Piece, ptr %3643, i64 %3642
  %3645 = getelementptr inbounds nuw i8, ptr %3644, i64 1896
  %3646 = load ptr, ptr %3645, align 8, !tbaa !57
  %3647 = load <2 x double>, ptr %3646, align 16, !tbaa !26
  %3648 = getelementptr inbounds nuw i8, ptr %3644, i64 336
  %3649 = load <2 x double>, ptr %3648, align 16, !tbaa !26
  %3650 = getelementptr inbounds nuw i8, ptr %3646, i64 16
  %3651 = load <2 x double>, ptr %3650, align 16, !tbaa !26
  %3652 = fsub <2 x double> %3651, %3647
  %3653 = fneg <2 x double> %3649
  %3654 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3653, <2 x double> %3652, <2 x double> %3647)
  %3655 = getelementptr inbounds nuw i8, ptr %3644, i64 1888
  %3656 = load i64, ptr %3655, align 16, !tbaa !31
  %3657 = icmp eq i64 %3656, 0
  br i1 %3657, label %3689, label %3658

3658:                                             ; preds = %3641
  %3659 = getelementptr <2 x double>, ptr %3646, i64 %3656
  %3660 = getelementptr i8, ptr %3659, i64 -16
  %3661 = load <2 x double>, ptr %3660, align 16, !tbaa !26
  %3662 = load <2 x double>, ptr %3659, align 16, !tbaa !26
  %3663 = getelementptr inbounds nuw i8, ptr %3644, i64 720
  %3664 = load <2 x double>, ptr %3663, align 16, !tbaa !26
  %3665 = getelementptr inbounds nuw i8, ptr %3644, i64 736
  %3666 = load <2 x double>, ptr %3665, align 16, !tbaa !26
  %3667 = getelementptr inbounds nuw i8, ptr %3644, i64 16
  %3668 = load <2 x double>, ptr %3667, align 16, !tbaa !26
  %3669 = fsub <2 x double> %3666, %3668
  %3670 = fmul <2 x double> %3664, %3669
  %3671 = getelementptr inbounds nuw i8, ptr %3644, i64 144
  %3672 = load <2 x double>, ptr %3671, align 16, !tbaa !26
  %3673 = getelementptr inbounds nuw i8, ptr %3644, i64 704
  %3674 = load <2 x double>, ptr %3673, align 16, !tbaa !26
  %3675 = fdiv <2 x double> %3672, %3674
  %3676 = getelementptr inbounds nuw i8, ptr %3644, i64 48
  %3677 = load <2 x double>, ptr %3676, align 16, !tbaa !26
  %3678 = getelementptr inbounds nuw i8, ptr %3644, i64 64
  %3679 = load <2 x double>, ptr %3678, align 16, !tbaa !26
  %3680 = getelementptr inbounds nuw i8, ptr %3644, i64 80
  %3681 = load <2 x double>, ptr %3680, align 16, !tbaa !26
  %3682 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3662, <2 x double> %3681, <2 x double> %3679)
  %3683 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3662, <2 x double> %3682, <2 x double> %3677)
  %3684 = fdiv <2 x double> %3683, %3670
  %3685 = fmul <2 x double> %3662, %3684
  %3686 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3675, <2 x double> %3661, <2 x double> %3685)
  %3687 = fadd <2 x double> %3675, %3684
  %3688 = fdiv <2 x double> %3686, %3687
  br label %3689

3689:                                             ; preds = %3641, %3658
  %3690 = phi <2 x double> [ %3688, %3658 ], [ %3654, %3641 ]
  %3691 = getelementptr inbounds nuw i8, ptr %3644, i64 1808
  %3692 = load <2 x double>, ptr %3691, align 16, !tbaa !26
  %3693 = select <2 x i1> %3319, <2 x double> %3692, <2 x double> %3690
  store <2 x double> %3693, ptr %3691, align 16, !tbaa !26
  %3694 = add nuw nsw i64 %3642, 1
  %3695 = load i64, ptr %169, align 8, !tbaa !20
  %3696 = icmp slt i64 %3694, %3695
  br i1 %3696, label %3641, label %3320, !llvm.loop !117

3697:                                             ; preds = %3597
  %3698 = icmp eq <2 x i64> %3638, zeroinitializer
  %3699 = select <2 x i1> %3698, <2 x double> %3334, <2 x double> %3333
  store <2 x double> %3699, ptr %219, align 16, !tbaa !26
  %3700 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %3701 = select <2 x i1> %3698, <2 x double> %3700, <2 x double> %3495
  store <2 x double> %3701, ptr %163, align 16, !tbaa !26
  %3702 = select <2 x i1> %3698, <2 x double> %3495, <2 x double> %3497
  store <2 x double> %3702, ptr %157, align 16, !tbaa !26
  %3703 = load <2 x double>, ptr %250, align 16, !tbaa !26
  %3704 = select <2 x i1> %3698, <2 x double> %3703, <2 x double> %3532
  store <2 x double> %3704, ptr %250, align 16, !tbaa !26
  %3705 = select <2 x i1> %3698, <2 x double> %3532, <2 x double> %3599
  store <2 x double> %3705, ptr %251, align 16, !tbaa !26
  %3706 = load <2 x double>, ptr %253, align 16, !tbaa !26
  %3707 = load <2 x double>, ptr %252, align 16, !tbaa !26
  %3708 = select <2 x i1> %3698, <2 x double> %3707, <2 x double> %3706
  store <2 x double> %3708, ptr %252, align 16, !tbaa !26
  %3709 = load <2 x double>, ptr %254, align 16, !tbaa !26
  %3710 = select <2 x i1> %3698, <2 x double> %3706, <2 x double> %3709
  store <2 x double> %3710, ptr %253, align 16, !tbaa !26
  %3711 = load <2 x double>, ptr %256, align 16, !tbaa !26
  %3712 = load <2 x double>, ptr %255, align 16, !tbaa !26
  %3713 = select <2 x i1> %3698, <2 x double> %3712, <2 x double> %3711
  store <2 x double> %3713, ptr %255, align 16, !tbaa !26
  %3714 = load <2 x double>, ptr %257, align 16, !tbaa !26
  %3715 = select <2 x i1> %3698, <2 x double> %3711, <2 x double> %3714
  store <2 x double> %3715, ptr %256, align 16, !tbaa !26
  %3716 = load <2 x double>, ptr %259, align 16, !tbaa !26
  %3717 = load <2 x double>, ptr %258, align 16, !tbaa !26
  %3718 = select <2 x i1> %3698, <2 x double> %3717, <2 x double> %3716
  store <2 x double> %3718, ptr %258, align 16, !tbaa !26
  %3719 = load <2 x double>, ptr %260, align 16, !tbaa !26
  %3720 = select <2 x i1> %3698, <2 x double> %3716, <2 x double> %3719
  store <2 x double> %3720, ptr %259, align 16, !tbaa !26
  %3721 = load <2 x double>, ptr %262, align 16, !tbaa !26
  %3722 = load <2 x double>, ptr %261, align 16, !tbaa !26
  %3723 = select <2 x i1> %3698, <2 x double> %3722, <2 x double> %3721
  store <2 x double> %3723, ptr %261, align 16, !tbaa !26
  %3724 = load <2 x double>, ptr %263, align 16, !tbaa !26
  %3725 = select <2 x i1> %3698, <2 x double> %3721, <2 x double> %3724
  store <2 x double> %3725, ptr %262, align 16, !tbaa !26
  %3726 = xor <2 x i64> %3638, splat (i64 -1)
  br i1 %3367, label %3727, label %4107

3727:                                             ; preds = %3697, %4063
  %3728 = phi i64 [ %4075, %4063 ], [ 0, %3697 ]
  %3729 = load ptr, ptr %142, align 8, !tbaa !28
  %3730 = getelementptr inbounds nuw %struct.Piece, ptr %3729, i64 %3728
  %3731 = getelementptr inbounds nuw i8, ptr %3730, i64 416
  %3732 = load <2 x double>, ptr %3731, align 16, !tbaa !26
  %3733 = fcmp ogt <2 x double> %3732, zeroinitializer
  %3734 = bitcast <2 x i1> %3733 to i2
  %3735 = icmp eq i2 %3734, 0
  %3736 = load i64, ptr %132, align 16, !tbaa !21
  br i1 %3735, label %3994, label %3737

3737:                                             ; preds = %3727
  %3738 = add i64 %3736, -1
  %3739 = getelementptr inbounds nuw i8, ptr %3730, i64 1104
  %3740 = load <2 x double>, ptr %3739, align 16, !tbaa !26
  %3741 = getelementptr inbounds nuw i8, ptr %3730, i64 912
  %3742 = load <2 x double>, ptr %3741, align 16, !tbaa !26
  %3743 = getelementptr inbounds nuw i8, ptr %3730, i64 1888
  %3744 = load i64, ptr %3743, align 16, !tbaa !31
  %3745 = icmp sgt i64 %3736, %3744
  br i1 %3745, label %3754, label %3746

3746:                                             ; preds = %3737
  %3747 = getelementptr inbounds nuw i8, ptr %3730, i64 1984
  %3748 = load ptr, ptr %3747, align 16, !tbaa !67
  %3749 = getelementptr inbounds <2 x double>, ptr %3748, i64 %3738
  %3750 = load <2 x double>, ptr %3749, align 16, !tbaa !26
  %3751 = getelementptr inbounds nuw i8, ptr %3730, i64 384
  %3752 = load <2 x double>, ptr %3751, align 16, !tbaa !26
  %3753 = fmul <2 x double> %3750, %3752
  br label %3763

3754:                                             ; preds = %3737
  %3755 = getelementptr inbounds nuw i8, ptr %3730, i64 384
  %3756 = load <2 x double>, ptr %3755, align 16, !tbaa !26
  %3757 = getelementptr inbounds nuw i8, ptr %3730, i64 1984
  %3758 = load ptr, ptr %3757, align 16, !tbaa !67
  %3759 = getelementptr inbounds <2 x double>, ptr %3758, i64 %3738
  %3760 = load <2 x double>, ptr %3759, align 16, !tbaa !26
  %3761 = fsub <2 x double> %3740, %3756
  %3762 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3760, <2 x double> %3761, <2 x double> %3756)
  br label %3763

3763:                                             ; preds = %3754, %3746
  %3764 = phi <2 x double> [ %3752, %3746 ], [ %3756, %3754 ]
  %3765 = phi <2 x double> [ %3753, %3746 ], [ %3762, %3754 ]
  %3766 = getelementptr inbounds nuw i8, ptr %3730, i64 752
  %3767 = load <2 x double>, ptr %3766, align 16, !tbaa !26
  %3768 = fcmp ole <2 x double> %3765, %3767
  %3769 = getelementptr inbounds nuw i8, ptr %3730, i64 1824
  %3770 = load <2 x double>, ptr %3769, align 16, !tbaa !26
  %3771 = fcmp oeq <2 x double> %3770, zeroinitializer
  %3772 = select <2 x i1> %3771, <2 x i1> %3768, <2 x i1> zeroinitializer
  %3773 = select <2 x i1> %3772, <2 x i64> %3638, <2 x i64> zeroinitializer
  %3774 = xor <2 x i64> %3773, %3638
  %3775 = fsub <2 x double> %3740, %3742
  %3776 = getelementptr inbounds nuw i8, ptr %3730, i64 384
  %3777 = fsub <2 x double> %3742, %3764
  %3778 = fdiv <2 x double> %3775, %3777
  %3779 = getelementptr inbounds nuw i8, ptr %3730, i64 1928
  %3780 = load ptr, ptr %3779, align 8, !tbaa !64
  %3781 = getelementptr inbounds <2 x double>, ptr %3780, i64 %3744
  %3782 = load <2 x double>, ptr %3781, align 16, !tbaa !26
  %3783 = getelementptr inbounds nuw i8, ptr %3730, i64 1936
  %3784 = load ptr, ptr %3783, align 16, !tbaa !47
  %3785 = getelementptr inbounds <2 x double>, ptr %3784, i64 %3744
  %3786 = load <2 x double>, ptr %3785, align 16, !tbaa !26
  %3787 = icmp eq <2 x i64> %3773, zeroinitializer
  %3788 = select <2 x i1> %3787, <2 x double> %3786, <2 x double> %3782
  store <2 x double> %3788, ptr %3785, align 16, !tbaa !26
  %3789 = load i64, ptr %3743, align 16, !tbaa !31
  %3790 = add nsw i64 %3789, 1
  %3791 = icmp slt i64 %3790, %3738
  br i1 %3791, label %3792, label %3796

3792:                                             ; preds = %3763
  %3793 = getelementptr inbounds nuw i8, ptr %3730, i64 2000
  br label %3838

3794:                                             ; preds = %3838
  %3795 = load i64, ptr %3743, align 16, !tbaa !31
  br label %3796

3796:                                             ; preds = %3794, %3763
  %3797 = phi i64 [ %3789, %3763 ], [ %3795, %3794 ]
  %3798 = phi <2 x double> [ %3782, %3763 ], [ %3843, %3794 ]
  %3799 = icmp sgt i64 %3736, %3797
  br i1 %3799, label %3807, label %3800

3800:                                             ; preds = %3796
  %3801 = getelementptr inbounds nuw i8, ptr %3730, i64 1984
  %3802 = load ptr, ptr %3801, align 16, !tbaa !67
  %3803 = getelementptr inbounds <2 x double>, ptr %3802, i64 %3738
  %3804 = load <2 x double>, ptr %3803, align 16, !tbaa !26
  %3805 = load <2 x double>, ptr %3776, align 16, !tbaa !26
  %3806 = fmul <2 x double> %3804, %3805
  br label %3815

3807:                                             ; preds = %3796
  %3808 = load <2 x double>, ptr %3776, align 16, !tbaa !26
  %3809 = getelementptr inbounds nuw i8, ptr %3730, i64 1984
  %3810 = load ptr, ptr %3809, align 16, !tbaa !67
  %3811 = getelementptr inbounds <2 x double>, ptr %3810, i64 %3738
  %3812 = load <2 x double>, ptr %3811, align 16, !tbaa !26
  %3813 = fsub <2 x double> %3742, %3808
  %3814 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3812, <2 x double> %3813, <2 x double> %3808)
  br label %3815

3815:                                             ; preds = %3807, %3800
  %3816 = phi <2 x double> [ %3806, %3800 ], [ %3814, %3807 ]
  %3817 = load ptr, ptr %3779, align 8, !tbaa !64
  %3818 = getelementptr inbounds <2 x double>, ptr %3817, i64 %3738
  %3819 = load <2 x double>, ptr %3818, align 16, !tbaa !26
  %3820 = load ptr, ptr %3783, align 16, !tbaa !47
  %3821 = getelementptr inbounds <2 x double>, ptr %3820, i64 %3738
  %3822 = fsub <2 x double> %3798, %3819
  %3823 = fsub <2 x double> %3765, %3816
  %3824 = load <2 x double>, ptr %3766, align 16, !tbaa !26
  %3825 = fsub <2 x double> %3824, %3816
  %3826 = fdiv <2 x double> %3823, %3825
  %3827 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3822, <2 x double> %3826, <2 x double> %3819)
  %3828 = load <2 x double>, ptr %3821, align 16, !tbaa !26
  %3829 = select <2 x i1> %3787, <2 x double> %3828, <2 x double> %3827
  store <2 x double> %3829, ptr %3821, align 16, !tbaa !26
  %3830 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3774)
  %3831 = icmp eq i64 %3830, 0
  br i1 %3831, label %3992, label %3832

3832:                                             ; preds = %3815
  %3833 = getelementptr inbounds nuw i8, ptr %3730, i64 1984
  %3834 = getelementptr inbounds nuw i8, ptr %3730, i64 784
  %3835 = getelementptr inbounds nuw i8, ptr %3730, i64 208
  %3836 = extractelement <2 x i64> %3774, i64 0
  %3837 = extractelement <2 x i64> %3774, i64 1
  br label %3856

3838:                                             ; preds = %3792, %3838
  %3839 = phi i64 [ %3790, %3792 ], [ %3854, %3838 ]
  %3840 = phi <2 x double> [ %3782, %3792 ], [ %3843, %3838 ]
  %3841 = load ptr, ptr %3779, align 8, !tbaa !64
  %3842 = getelementptr inbounds <2 x double>, ptr %3841, i64 %3839
  %3843 = load <2 x double>, ptr %3842, align 16, !tbaa !26
  %3844 = load ptr, ptr %3783, align 16, !tbaa !47
  %3845 = getelementptr inbounds <2 x double>, ptr %3844, i64 %3839
  %3846 = fsub <2 x double> %3840, %3843
  %3847 = load ptr, ptr %3793, align 16, !tbaa !118
  %3848 = getelementptr inbounds <2 x double>, ptr %3847, i64 %3839
  %3849 = load <2 x double>, ptr %3848, align 16, !tbaa !26
  %3850 = fmul <2 x double> %3778, %3849
  %3851 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3846, <2 x double> %3850, <2 x double> %3843)
  %3852 = load <2 x double>, ptr %3845, align 16, !tbaa !26
  %3853 = select <2 x i1> %3787, <2 x double> %3852, <2 x double> %3851
  store <2 x double> %3853, ptr %3845, align 16, !tbaa !26
  %3854 = add nsw i64 %3839, 1
  %3855 = icmp eq i64 %3854, %3738
  br i1 %3855, label %3794, label %3838, !llvm.loop !119

3856:                                             ; preds = %3832, %3991
  %3857 = phi i1 [ true, %3832 ], [ false, %3991 ]
  %3858 = phi i64 [ %3836, %3832 ], [ %3837, %3991 ]
  %3859 = phi i64 [ 0, %3832 ], [ 1, %3991 ]
  %3860 = icmp eq i64 %3858, 0
  br i1 %3860, label %3991, label %3861

3861:                                             ; preds = %3856
  %3862 = load i64, ptr %132, align 16, !tbaa !21
  %3863 = load i64, ptr %3743, align 16, !tbaa !31
  %3864 = getelementptr inbounds nuw double, ptr %3776, i64 %3859
  %3865 = load double, ptr %3864, align 8, !tbaa !42
  %3866 = getelementptr inbounds nuw double, ptr %3766, i64 %3859
  %3867 = load double, ptr %3866, align 8, !tbaa !42
  %3868 = add nsw i64 %3862, -1
  %3869 = icmp sgt i64 %3862, %3863
  br i1 %3869, label %3870, label %3991

3870:                                             ; preds = %3861
  %3871 = getelementptr inbounds nuw double, ptr %3741, i64 %3859
  %3872 = load double, ptr %3871, align 8, !tbaa !42
  %3873 = getelementptr inbounds nuw double, ptr %3739, i64 %3859
  %3874 = load double, ptr %3873, align 8, !tbaa !42
  %3875 = load ptr, ptr %3833, align 16
  %3876 = getelementptr i8, ptr %3875, i64 16
  %3877 = getelementptr double, ptr %3876, i64 %3859
  %3878 = fsub double %3872, %3865
  %3879 = getelementptr double, ptr %3875, i64 %3859
  %3880 = fsub double %3874, %3865
  %3881 = load ptr, ptr %3779, align 8, !tbaa !64
  %3882 = getelementptr double, ptr %3881, i64 %3859
  %3883 = load ptr, ptr %3783, align 16, !tbaa !47
  %3884 = getelementptr double, ptr %3883, i64 %3859
  %3885 = getelementptr <2 x double>, ptr %3879, i64 %3868
  br label %3913

3886:                                             ; preds = %3959
  %3887 = getelementptr inbounds nuw double, ptr %3769, i64 %3859
  %3888 = load double, ptr %3887, align 8, !tbaa !42
  %3889 = fcmp ogt double %3888, 0.000000e+00
  %3890 = fcmp ogt double %3970, 0.000000e+00
  %3891 = select i1 %3889, i1 %3890, i1 false
  br i1 %3891, label %3892, label %3991

3892:                                             ; preds = %3886
  %3893 = getelementptr inbounds nuw double, ptr %3834, i64 %3859
  %3894 = getelementptr inbounds nuw double, ptr %3835, i64 %3859
  %3895 = sub i64 %3862, %3863
  %3896 = add i64 %3863, 1
  %3897 = and i64 %3895, 1
  %3898 = icmp eq i64 %3897, 0
  br i1 %3898, label %3908, label %3899

3899:                                             ; preds = %3892
  %3900 = load double, ptr %3893, align 8, !tbaa !42
  %3901 = load double, ptr %3894, align 8, !tbaa !42
  %3902 = fmul double %3970, %3901
  %3903 = fdiv double %3900, %3902
  %3904 = getelementptr <2 x double>, ptr %3884, i64 %3863
  %3905 = load double, ptr %3904, align 8, !tbaa !42
  %3906 = fmul double %3905, %3903
  store double %3906, ptr %3904, align 8, !tbaa !42
  %3907 = add nsw i64 %3863, 1
  br label %3908

3908:                                             ; preds = %3899, %3892
  %3909 = phi i64 [ %3863, %3892 ], [ %3907, %3899 ]
  %3910 = icmp eq i64 %3862, %3896
  br i1 %3910, label %3991, label %3911

3911:                                             ; preds = %3908
  %3912 = getelementptr i8, ptr %3884, i64 16
  br label %3973

3913:                                             ; preds = %3959, %3870
  %3914 = phi double [ 0.000000e+00, %3870 ], [ %3970, %3959 ]
  %3915 = phi i64 [ %3868, %3870 ], [ %3971, %3959 ]
  %3916 = icmp eq i64 %3915, %3868
  br i1 %3916, label %3917, label %3920

3917:                                             ; preds = %3913
  %3918 = load double, ptr %3885, align 8, !tbaa !42
  %3919 = tail call noundef double @llvm.fmuladd.f64(double %3918, double %3878, double %3865)
  br label %3931

3920:                                             ; preds = %3913
  %3921 = getelementptr <2 x double>, ptr %3877, i64 %3915
  %3922 = load double, ptr %3921, align 8, !tbaa !42
  %3923 = tail call noundef double @llvm.fmuladd.f64(double %3922, double %3878, double %3865)
  %3924 = getelementptr <2 x double>, ptr %3879, i64 %3915
  %3925 = load double, ptr %3924, align 8, !tbaa !42
  %3926 = tail call noundef double @llvm.fmuladd.f64(double %3925, double %3878, double %3865)
  %3927 = tail call noundef double @llvm.fmuladd.f64(double %3922, double %3880, double %3865)
  %3928 = fcmp ult double %3927, %3923
  br i1 %3928, label %3929, label %3931

3929:                                             ; preds = %3920
  %3930 = add nsw i64 %3915, 1
  br label %3931

3931:                                             ; preds = %3929, %3920, %3917
  %3932 = phi double [ %3926, %3929 ], [ %3926, %3920 ], [ %3919, %3917 ]
  %3933 = phi double [ %3923, %3929 ], [ %3923, %3920 ], [ %3867, %3917 ]
  %3934 = phi i64 [ %3930, %3929 ], [ %3915, %3920 ], [ %3868, %3917 ]
  %3935 = icmp sgt i64 %3934, %3863
  br i1 %3935, label %3936, label %3959

3936:                                             ; preds = %3931
  %3937 = load ptr, ptr %3779, align 8
  %3938 = getelementptr double, ptr %3937, i64 %3859
  br label %3939

3939:                                             ; preds = %3954, %3936
  %3940 = phi i64 [ %3934, %3936 ], [ %3957, %3954 ]
  %3941 = phi double [ 0.000000e+00, %3936 ], [ %3956, %3954 ]
  %3942 = phi double [ %3933, %3936 ], [ %3955, %3954 ]
  %3943 = getelementptr <2 x double>, ptr %3879, i64 %3940
  %3944 = load double, ptr %3943, align 8, !tbaa !42
  %3945 = tail call noundef double @llvm.fmuladd.f64(double %3944, double %3880, double %3865)
  %3946 = fcmp ogt double %3945, %3932
  br i1 %3946, label %3947, label %3959

3947:                                             ; preds = %3939
  %3948 = fcmp ogt double %3942, %3945
  br i1 %3948, label %3949, label %3954

3949:                                             ; preds = %3947
  %3950 = getelementptr <2 x double>, ptr %3938, i64 %3940
  %3951 = load double, ptr %3950, align 8, !tbaa !42
  %3952 = fsub double %3942, %3945
  %3953 = tail call double @llvm.fmuladd.f64(double %3951, double %3952, double %3941)
  br label %3954

3954:                                             ; preds = %3949, %3947
  %3955 = phi double [ %3945, %3949 ], [ %3942, %3947 ]
  %3956 = phi double [ %3953, %3949 ], [ %3941, %3947 ]
  %3957 = add nsw i64 %3940, -1
  %3958 = icmp sgt i64 %3957, %3863
  br i1 %3958, label %3939, label %3959, !llvm.loop !120

3959:                                             ; preds = %3954, %3939, %3931
  %3960 = phi double [ %3933, %3931 ], [ %3942, %3939 ], [ %3955, %3954 ]
  %3961 = phi double [ 0.000000e+00, %3931 ], [ %3941, %3939 ], [ %3956, %3954 ]
  %3962 = phi i64 [ %3934, %3931 ], [ %3940, %3939 ], [ %3863, %3954 ]
  %3963 = getelementptr <2 x double>, ptr %3882, i64 %3962
  %3964 = load double, ptr %3963, align 8, !tbaa !42
  %3965 = fsub double %3960, %3932
  %3966 = tail call double @llvm.fmuladd.f64(double %3964, double %3965, double %3961)
  %3967 = fsub double %3933, %3932
  %3968 = fdiv double %3966, %3967
  %3969 = getelementptr <2 x double>, ptr %3884, i64 %3915
  store double %3968, ptr %3969, align 8, !tbaa !42
  %3970 = fadd double %3914, %3966
  %3971 = add nsw i64 %3915, -1
  %3972 = icmp sgt i64 %3915, %3863
  br i1 %3972, label %3913, label %3886, !llvm.loop !121

3973:                                             ; preds = %3973, %3911
  %3974 = phi i64 [ %3909, %3911 ], [ %3989, %3973 ]
  %3975 = load double, ptr %3893, align 8, !tbaa !42
  %3976 = load double, ptr %3894, align 8, !tbaa !42
  %3977 = fmul double %3970, %3976
  %3978 = fdiv double %3975, %3977
  %3979 = getelementptr <2 x double>, ptr %3884, i64 %3974
  %3980 = load double, ptr %3979, align 8, !tbaa !42
  %3981 = fmul double %3980, %3978
  store double %3981, ptr %3979, align 8, !tbaa !42
  %3982 = load double, ptr %3893, align 8, !tbaa !42
  %3983 = load double, ptr %3894, align 8, !tbaa !42
  %3984 = fmul double %3970, %3983
  %3985 = fdiv double %3982, %3984
  %3986 = getelementptr <2 x double>, ptr %3912, i64 %3974
  %3987 = load double, ptr %3986, align 8, !tbaa !42
  %3988 = fmul double %3987, %3985
  store double %3988, ptr %3986, align 8, !tbaa !42
  %3989 = add nsw i64 %3974, 2
  %3990 = icmp eq i64 %3989, %3862
  br i1 %3990, label %3991, label %3973, !llvm.loop !122

3991:                                             ; preds = %3908, %3973, %3886, %3861, %3856
  br i1 %3857, label %3856, label %3992, !llvm.loop !123

3992:                                             ; preds = %3991, %3815
  %3993 = load i64, ptr %132, align 16, !tbaa !21
  br label %3994

3994:                                             ; preds = %3727, %3992
  %3995 = phi i64 [ %3736, %3727 ], [ %3993, %3992 ]
  %3996 = getelementptr inbounds nuw i8, ptr %3730, i64 1896
  %3997 = load ptr, ptr %3996, align 8, !tbaa !57
  %3998 = getelementptr inbounds nuw i8, ptr %3730, i64 1904
  %3999 = load ptr, ptr %3998, align 16, !tbaa !46
  %4000 = getelementptr inbounds nuw i8, ptr %3730, i64 1912
  %4001 = load ptr, ptr %4000, align 8, !tbaa !56
  %4002 = icmp sgt i64 %3995, 0
  br i1 %4002, label %4013, label %4003

4003:                                             ; preds = %4013, %3994
  %4004 = load i64, ptr %133, align 8, !tbaa !22
  %4005 = icmp sgt i64 %4004, 0
  br i1 %4005, label %4006, label %4026

4006:                                             ; preds = %4003
  %4007 = getelementptr inbounds nuw i8, ptr %3730, i64 2080
  %4008 = getelementptr inbounds nuw i8, ptr %3730, i64 2072
  %4009 = getelementptr inbounds nuw i8, ptr %3730, i64 2064
  %4010 = getelementptr inbounds nuw i8, ptr %3730, i64 2032
  %4011 = getelementptr inbounds nuw i8, ptr %3730, i64 2024
  %4012 = getelementptr inbounds nuw i8, ptr %3730, i64 2016
  br label %4030

4013:                                             ; preds = %3994, %4013
  %4014 = phi i64 [ %4023, %4013 ], [ 0, %3994 ]
  %4015 = getelementptr inbounds nuw <2 x double>, ptr %3999, i64 %4014
  %4016 = load <2 x double>, ptr %4015, align 16, !tbaa !26
  %4017 = getelementptr inbounds nuw <2 x double>, ptr %4001, i64 %4014
  %4018 = load <2 x double>, ptr %4017, align 16, !tbaa !26
  %4019 = select <2 x i1> %3698, <2 x double> %4018, <2 x double> %4016
  store <2 x double> %4019, ptr %4017, align 16, !tbaa !26
  %4020 = getelementptr inbounds nuw <2 x double>, ptr %3997, i64 %4014
  %4021 = load <2 x double>, ptr %4020, align 16, !tbaa !26
  %4022 = select <2 x i1> %3698, <2 x double> %4016, <2 x double> %4021
  store <2 x double> %4022, ptr %4015, align 16, !tbaa !26
  %4023 = add nuw nsw i64 %4014, 1
  %4024 = load i64, ptr %132, align 16, !tbaa !21
  %4025 = icmp slt i64 %4023, %4024
  br i1 %4025, label %4013, label %4003, !llvm.loop !124

4026:                                             ; preds = %4030, %4003
  %4027 = getelementptr inbounds nuw i8, ptr %3730, i64 1120
  %4028 = getelementptr inbounds nuw i8, ptr %3730, i64 928
  %4029 = getelementptr inbounds nuw i8, ptr %3730, i64 736
  br label %4078

4030:                                             ; preds = %4006, %4030
  %4031 = phi i64 [ 0, %4006 ], [ %4060, %4030 ]
  %4032 = load ptr, ptr %4007, align 16, !tbaa !59
  %4033 = getelementptr inbounds nuw <2 x double>, ptr %4032, i64 %4031
  %4034 = load ptr, ptr %4008, align 8, !tbaa !49
  %4035 = getelementptr inbounds nuw <2 x double>, ptr %4034, i64 %4031
  %4036 = load <2 x double>, ptr %4035, align 16, !tbaa !26
  %4037 = load <2 x double>, ptr %4033, align 16, !tbaa !26
  %4038 = select <2 x i1> %3698, <2 x double> %4037, <2 x double> %4036
  store <2 x double> %4038, ptr %4033, align 16, !tbaa !26
  %4039 = load ptr, ptr %4008, align 8, !tbaa !49
  %4040 = getelementptr inbounds nuw <2 x double>, ptr %4039, i64 %4031
  %4041 = load ptr, ptr %4009, align 16, !tbaa !75
  %4042 = getelementptr inbounds nuw <2 x double>, ptr %4041, i64 %4031
  %4043 = load <2 x double>, ptr %4042, align 16, !tbaa !26
  %4044 = load <2 x double>, ptr %4040, align 16, !tbaa !26
  %4045 = select <2 x i1> %3698, <2 x double> %4044, <2 x double> %4043
  store <2 x double> %4045, ptr %4040, align 16, !tbaa !26
  %4046 = load ptr, ptr %4010, align 16, !tbaa !61
  %4047 = getelementptr inbounds nuw <2 x double>, ptr %4046, i64 %4031
  %4048 = load ptr, ptr %4011, align 8, !tbaa !50
  %4049 = getelementptr inbounds nuw <2 x double>, ptr %4048, i64 %4031
  %4050 = load <2 x double>, ptr %4049, align 16, !tbaa !26
  %4051 = load <2 x double>, ptr %4047, align 16, !tbaa !26
  %4052 = select <2 x i1> %3698, <2 x double> %4051, <2 x double> %4050
  store <2 x double> %4052, ptr %4047, align 16, !tbaa !26
  %4053 = load ptr, ptr %4011, align 8, !tbaa !50
  %4054 = getelementptr inbounds nuw <2 x double>, ptr %4053, i64 %4031
  %4055 = load ptr, ptr %4012, align 16, !tbaa !106
  %4056 = getelementptr inbounds nuw <2 x double>, ptr %4055, i64 %4031
  %4057 = load <2 x double>, ptr %4056, align 16, !tbaa !26
  %4058 = load <2 x double>, ptr %4054, align 16, !tbaa !26
  %4059 = select <2 x i1> %3698, <2 x double> %4058, <2 x double> %4057
  store <2 x double> %4059, ptr %4054, align 16, !tbaa !26
  %4060 = add nuw nsw i64 %4031, 1
  %4061 = load i64, ptr %133, align 8, !tbaa !22
  %4062 = icmp slt i64 %4060, %4061
  br i1 %4062, label %4030, label %4026, !llvm.loop !125

4063:                                             ; preds = %4078
  %4064 = getelementptr inbounds nuw i8, ptr %3730, i64 1856
  %4065 = getelementptr inbounds nuw i8, ptr %3730, i64 1424
  %4066 = load <2 x double>, ptr %4065, align 16, !tbaa !26
  %4067 = fcmp ogt <2 x double> %4066, zeroinitializer
  %4068 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %4069 = fcmp une <2 x double> %4068, splat (double 2.000000e+00)
  %4070 = and <2 x i1> %4067, %4069
  %4071 = select <2 x i1> %4070, <2 x i64> %3638, <2 x i64> zeroinitializer
  %4072 = load <2 x i64>, ptr %4064, align 16, !tbaa !26
  %4073 = and <2 x i64> %4072, %3726
  %4074 = or disjoint <2 x i64> %4071, %4073
  store <2 x i64> %4074, ptr %4064, align 16, !tbaa !26
  %4075 = add nuw nsw i64 %3728, 1
  %4076 = load i64, ptr %169, align 8, !tbaa !20
  %4077 = icmp slt i64 %4075, %4076
  br i1 %4077, label %3727, label %4099, !llvm.loop !126

4078:                                             ; preds = %4078, %4026
  %4079 = phi i64 [ 0, %4026 ], [ %4097, %4078 ]
  %4080 = getelementptr inbounds nuw [12 x <2 x double>], ptr %4027, i64 0, i64 %4079
  %4081 = getelementptr inbounds nuw [12 x <2 x double>], ptr %4028, i64 0, i64 %4079
  %4082 = load <2 x double>, ptr %4081, align 16, !tbaa !26
  %4083 = load <2 x double>, ptr %4080, align 16, !tbaa !26
  %4084 = select <2 x i1> %3698, <2 x double> %4083, <2 x double> %4082
  store <2 x double> %4084, ptr %4080, align 16, !tbaa !26
  %4085 = getelementptr inbounds nuw [12 x <2 x double>], ptr %4029, i64 0, i64 %4079
  %4086 = load <2 x double>, ptr %4085, align 16, !tbaa !26
  %4087 = select <2 x i1> %3698, <2 x double> %4082, <2 x double> %4086
  store <2 x double> %4087, ptr %4081, align 16, !tbaa !26
  %4088 = or disjoint i64 %4079, 1
  %4089 = getelementptr inbounds nuw [12 x <2 x double>], ptr %4027, i64 0, i64 %4088
  %4090 = getelementptr inbounds nuw [12 x <2 x double>], ptr %4028, i64 0, i64 %4088
  %4091 = load <2 x double>, ptr %4090, align 16, !tbaa !26
  %4092 = load <2 x double>, ptr %4089, align 16, !tbaa !26
  %4093 = select <2 x i1> %3698, <2 x double> %4092, <2 x double> %4091
  store <2 x double> %4093, ptr %4089, align 16, !tbaa !26
  %4094 = getelementptr inbounds nuw [12 x <2 x double>], ptr %4029, i64 0, i64 %4088
  %4095 = load <2 x double>, ptr %4094, align 16, !tbaa !26
  %4096 = select <2 x i1> %3698, <2 x double> %4091, <2 x double> %4095
  store <2 x double> %4096, ptr %4090, align 16, !tbaa !26
  %4097 = add nuw nsw i64 %4079, 2
  %4098 = icmp eq i64 %4097, 12
  br i1 %4098, label %4063, label %4078, !llvm.loop !127

4099:                                             ; preds = %4063
  %4100 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4101 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4102 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4103 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %4104 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4105 = fdiv <2 x double> %4102, %3336
  %4106 = icmp sgt i64 %4076, 0
  br label %4107

4107:                                             ; preds = %3697, %4099
  %4108 = phi <2 x double> [ %4105, %4099 ], [ %3346, %3697 ]
  %4109 = phi i1 [ %4106, %4099 ], [ false, %3697 ]
  %4110 = phi <2 x double> [ %4104, %4099 ], [ %3325, %3697 ]
  %4111 = phi <2 x double> [ %4103, %4099 ], [ %3626, %3697 ]
  %4112 = phi <2 x double> [ %4101, %4099 ], [ %3342, %3697 ]
  %4113 = phi <2 x double> [ %4100, %4099 ], [ %3340, %3697 ]
  %4114 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4115 = fadd <2 x double> %4114, %4113
  %4116 = select <2 x i1> %3698, <2 x double> %4114, <2 x double> %4115
  store <2 x double> %4116, ptr %149, align 16, !tbaa !26
  %4117 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %4118 = select <2 x i1> %3698, <2 x double> %4117, <2 x double> %4113
  store <2 x double> %4118, ptr %164, align 16, !tbaa !26
  %4119 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4120 = fadd <2 x double> %4119, splat (double 1.000000e+00)
  %4121 = select <2 x i1> %3698, <2 x double> %4119, <2 x double> %4120
  store <2 x double> %4121, ptr %136, align 16, !tbaa !26
  %4122 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %4123 = fcmp olt <2 x double> %4122, %4113
  %4124 = select <2 x i1> %3698, <2 x i1> splat (i1 true), <2 x i1> %4123
  %4125 = select <2 x i1> %4124, <2 x double> %4122, <2 x double> %4113
  store <2 x double> %4125, ptr %138, align 16, !tbaa !26
  %4126 = fcmp une <2 x double> %4112, zeroinitializer
  %4127 = fcmp ueq <2 x double> %3335, zeroinitializer
  %4128 = or <2 x i1> %4127, %4126
  %4129 = fcmp olt <2 x double> %4108, splat (double 1.800000e+00)
  %4130 = select <2 x i1> %4129, <2 x double> %4108, <2 x double> splat (double 1.800000e+00)
  %4131 = select <2 x i1> %4128, <2 x double> splat (double 1.800000e+00), <2 x double> %4130
  %4132 = fcmp ogt <2 x double> %4131, splat (double 2.000000e-01)
  %4133 = select <2 x i1> %4132, <2 x double> %4131, <2 x double> splat (double 2.000000e-01)
  %4134 = fmul <2 x double> %4113, %4133
  %4135 = fmul <2 x double> %4113, splat (double 4.000000e+00)
  %4136 = fcmp olt <2 x double> %4111, %4135
  %4137 = select <2 x i1> %4136, <2 x double> %4111, <2 x double> %4135
  %4138 = fcmp ogt <2 x double> %4134, %4137
  %4139 = select <2 x i1> %4138, <2 x double> %4134, <2 x double> %4137
  %4140 = select <2 x i1> %3698, <2 x double> %4111, <2 x double> zeroinitializer
  store <2 x double> %4140, ptr %172, align 16, !tbaa !26
  %4141 = select <2 x i1> %3698, <2 x double> %4110, <2 x double> zeroinitializer
  store <2 x double> %4141, ptr %174, align 16, !tbaa !26
  %4142 = load <2 x i64>, ptr %165, align 16, !tbaa !26
  %4143 = and <2 x i64> %4142, %3726
  store <2 x i64> %4143, ptr %165, align 16, !tbaa !26
  %4144 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %4145 = and <2 x i64> %4144, %3726
  store <2 x i64> %4145, ptr %166, align 16, !tbaa !26
  %4146 = load <2 x double>, ptr %210, align 16, !tbaa !26
  %4147 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %4148 = select <2 x i1> %3698, <2 x double> %4147, <2 x double> %4146
  store <2 x double> %4148, ptr %159, align 16, !tbaa !26
  br i1 %4109, label %4149, label %4613

4149:                                             ; preds = %4107, %4606
  %4150 = phi i64 [ %4608, %4606 ], [ 0, %4107 ]
  %4151 = phi <2 x double> [ %4607, %4606 ], [ %4139, %4107 ]
  %4152 = load ptr, ptr %142, align 8, !tbaa !28
  %4153 = getelementptr inbounds nuw %struct.Piece, ptr %4152, i64 %4150
  %4154 = getelementptr inbounds nuw i8, ptr %4153, i64 944
  %4155 = load <2 x double>, ptr %4154, align 16, !tbaa !26
  %4156 = getelementptr inbounds nuw i8, ptr %4153, i64 368
  %4157 = load <2 x double>, ptr %4156, align 16, !tbaa !26
  %4158 = fmul <2 x double> %4157, splat (double 1.001000e+00)
  %4159 = fcmp ole <2 x double> %4155, %4158
  %4160 = getelementptr inbounds nuw i8, ptr %4153, i64 400
  %4161 = load <2 x double>, ptr %4160, align 16, !tbaa !26
  %4162 = getelementptr inbounds nuw i8, ptr %4153, i64 1008
  %4163 = load <2 x double>, ptr %4162, align 16, !tbaa !26
  %4164 = fsub <2 x double> %4161, %4163
  %4165 = fmul <2 x double> %4161, splat (double 1.000000e-04)
  %4166 = fcmp ole <2 x double> %4164, %4165
  %4167 = getelementptr inbounds nuw i8, ptr %4153, i64 1840
  %4168 = load <2 x i64>, ptr %4167, align 16, !tbaa !26
  %4169 = and <2 x i64> %4168, %3638
  %4170 = getelementptr inbounds nuw i8, ptr %4153, i64 1824
  %4171 = load <2 x double>, ptr %4170, align 16, !tbaa !26
  %4172 = fcmp oeq <2 x double> %4171, zeroinitializer
  %4173 = and <2 x i1> %4159, %4172
  %4174 = fcmp oeq <2 x double> %4171, splat (double 1.000000e+00)
  %4175 = and <2 x i1> %4166, %4174
  %4176 = or <2 x i1> %4173, %4175
  %4177 = select <2 x i1> %4176, <2 x i64> %4169, <2 x i64> zeroinitializer
  %4178 = fadd <2 x double> %4171, splat (double 1.000000e+00)
  %4179 = icmp eq <2 x i64> %4177, zeroinitializer
  %4180 = select <2 x i1> %4179, <2 x double> %4171, <2 x double> %4178
  store <2 x double> %4180, ptr %4170, align 16, !tbaa !26
  %4181 = getelementptr inbounds nuw i8, ptr %4153, i64 1856
  %4182 = load <2 x i64>, ptr %4181, align 16, !tbaa !26
  %4183 = or <2 x i64> %4177, %4182
  store <2 x i64> %4183, ptr %4181, align 16, !tbaa !26
  %4184 = getelementptr inbounds nuw i8, ptr %4153, i64 224
  %4185 = load <2 x double>, ptr %4184, align 16, !tbaa !26
  %4186 = getelementptr inbounds nuw i8, ptr %4153, i64 1408
  %4187 = load <2 x double>, ptr %4186, align 16, !tbaa !26
  %4188 = getelementptr inbounds nuw i8, ptr %4153, i64 1424
  %4189 = load <2 x double>, ptr %4188, align 16, !tbaa !26
  %4190 = fadd <2 x double> %4187, %4189
  %4191 = fcmp ogt <2 x double> %4190, zeroinitializer
  %4192 = xor <2 x i64> %4168, splat (i64 -1)
  %4193 = and <2 x i64> %3638, %4192
  %4194 = fcmp une <2 x double> %4185, zeroinitializer
  %4195 = or <2 x i1> %4194, %4191
  %4196 = getelementptr inbounds nuw i8, ptr %4153, i64 960
  %4197 = load <2 x double>, ptr %4196, align 16, !tbaa !26
  %4198 = fmul <2 x double> %4185, splat (double 1.000000e-03)
  %4199 = fcmp ogt <2 x double> %4198, splat (double 0x3E7AD7F29ABCAF48)
  %4200 = select <2 x i1> %4199, <2 x double> %4198, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4201 = fcmp ole <2 x double> %4197, %4200
  %4202 = select <2 x i1> %4201, <2 x i1> %4195, <2 x i1> zeroinitializer
  %4203 = select <2 x i1> %4202, <2 x i64> %4193, <2 x i64> zeroinitializer
  %4204 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4203)
  %4205 = icmp eq i64 %4204, 0
  br i1 %4205, label %4606, label %4206

4206:                                             ; preds = %4149
  %4207 = load i64, ptr %132, align 16, !tbaa !21
  %4208 = load i64, ptr %133, align 8, !tbaa !22
  %4209 = getelementptr inbounds nuw i8, ptr %4153, i64 928
  %4210 = getelementptr inbounds nuw i8, ptr %4153, i64 1104
  %4211 = load <2 x double>, ptr %4210, align 16, !tbaa !26
  %4212 = getelementptr inbounds nuw i8, ptr %4153, i64 1392
  %4213 = load <2 x double>, ptr %4212, align 16, !tbaa !26
  %4214 = getelementptr inbounds nuw i8, ptr %4153, i64 208
  %4215 = load <2 x double>, ptr %4214, align 16, !tbaa !26
  %4216 = getelementptr inbounds nuw i8, ptr %4153, i64 1936
  %4217 = load ptr, ptr %4216, align 16, !tbaa !47
  %4218 = add nsw i64 %4207, -1
  %4219 = getelementptr inbounds <2 x double>, ptr %4217, i64 %4218
  %4220 = load <2 x double>, ptr %4219, align 16, !tbaa !26
  %4221 = fmul <2 x double> %4215, %4220
  %4222 = fneg <2 x double> %4197
  %4223 = fdiv <2 x double> %4222, %4221
  %4224 = fcmp ogt <2 x double> %4223, splat (double 0x3E7AD7F29ABCAF48)
  %4225 = select <2 x i1> %4224, <2 x double> %4223, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4226 = load <2 x double>, ptr %4153, align 16, !tbaa !26
  %4227 = fsub <2 x double> %4226, %4225
  %4228 = getelementptr inbounds nuw i8, ptr %4153, i64 640
  %4229 = load <2 x double>, ptr %4228, align 16, !tbaa !26
  %4230 = getelementptr inbounds nuw i8, ptr %4153, i64 656
  %4231 = load <2 x double>, ptr %4230, align 16, !tbaa !26
  %4232 = getelementptr inbounds nuw i8, ptr %4153, i64 672
  %4233 = load <2 x double>, ptr %4232, align 16, !tbaa !26
  %4234 = getelementptr inbounds nuw i8, ptr %4153, i64 688
  %4235 = load <2 x double>, ptr %4234, align 16, !tbaa !26
  %4236 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4227, <2 x double> %4235, <2 x double> %4233)
  %4237 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4227, <2 x double> %4236, <2 x double> %4231)
  %4238 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4227, <2 x double> %4237, <2 x double> %4229)
  %4239 = fsub <2 x double> %4211, %4238
  %4240 = getelementptr inbounds nuw i8, ptr %4153, i64 1904
  %4241 = load ptr, ptr %4240, align 16, !tbaa !46
  %4242 = getelementptr inbounds <2 x double>, ptr %4241, i64 %4218
  %4243 = load <2 x double>, ptr %4242, align 16, !tbaa !26
  %4244 = getelementptr inbounds nuw i8, ptr %4153, i64 1888
  %4245 = load i64, ptr %4244, align 16, !tbaa !31
  %4246 = icmp sgt i64 %4207, %4245
  br i1 %4246, label %4255, label %4247

4247:                                             ; preds = %4206
  %4248 = getelementptr inbounds nuw i8, ptr %4153, i64 160
  %4249 = load <2 x double>, ptr %4248, align 16, !tbaa !26
  %4250 = getelementptr inbounds nuw i8, ptr %4153, i64 1912
  %4251 = load ptr, ptr %4250, align 8, !tbaa !56
  %4252 = getelementptr inbounds <2 x double>, ptr %4251, i64 %4218
  %4253 = load <2 x double>, ptr %4252, align 16, !tbaa !26
  %4254 = fmul <2 x double> %4253, %4249
  br label %4275

4255:                                             ; preds = %4206
  %4256 = getelementptr inbounds nuw i8, ptr %4153, i64 96
  %4257 = load <2 x double>, ptr %4256, align 16, !tbaa !26
  %4258 = getelementptr inbounds nuw i8, ptr %4153, i64 112
  %4259 = load <2 x double>, ptr %4258, align 16, !tbaa !26
  %4260 = getelementptr inbounds nuw i8, ptr %4153, i64 128
  %4261 = load <2 x double>, ptr %4260, align 16, !tbaa !26
  %4262 = fmul <2 x double> %4243, %4261
  %4263 = fmul <2 x double> %4262, splat (double 0x3FD5555555555555)
  %4264 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4259, <2 x double> splat (double 5.000000e-01), <2 x double> %4263)
  %4265 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4243, <2 x double> %4264, <2 x double> %4257)
  %4266 = getelementptr inbounds nuw i8, ptr %4153, i64 1912
  %4267 = load ptr, ptr %4266, align 8, !tbaa !56
  %4268 = getelementptr inbounds <2 x double>, ptr %4267, i64 %4218
  %4269 = load <2 x double>, ptr %4268, align 16, !tbaa !26
  %4270 = fmul <2 x double> %4269, %4261
  %4271 = fmul <2 x double> %4270, splat (double 0x3FD5555555555555)
  %4272 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4259, <2 x double> splat (double 5.000000e-01), <2 x double> %4271)
  %4273 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4269, <2 x double> %4272, <2 x double> %4257)
  %4274 = fmul <2 x double> %4269, %4273
  br label %4275

4275:                                             ; preds = %4255, %4247
  %4276 = phi ptr [ %4267, %4255 ], [ %4251, %4247 ]
  %4277 = phi <2 x double> [ %4265, %4255 ], [ %4249, %4247 ]
  %4278 = phi <2 x double> [ %4274, %4255 ], [ %4254, %4247 ]
  %4279 = phi ptr [ %4266, %4255 ], [ %4250, %4247 ]
  %4280 = sitofp i64 %4208 to double
  %4281 = insertelement <2 x double> poison, double %4280, i64 0
  %4282 = shufflevector <2 x double> %4281, <2 x double> poison, <2 x i32> zeroinitializer
  %4283 = fmul <2 x double> %4243, %4277
  %4284 = fdiv <2 x double> %4225, %4282
  %4285 = getelementptr i8, ptr %4241, i64 -16
  %4286 = getelementptr i8, ptr %4217, i64 -16
  %4287 = icmp sgt i64 %4207, 0
  br i1 %4287, label %4288, label %4389

4288:                                             ; preds = %4275
  %4289 = fmul <2 x double> %4243, %4277
  %4290 = getelementptr inbounds nuw i8, ptr %4153, i64 160
  %4291 = getelementptr inbounds nuw i8, ptr %4153, i64 96
  %4292 = getelementptr inbounds nuw i8, ptr %4153, i64 112
  %4293 = getelementptr inbounds nuw i8, ptr %4153, i64 128
  %4294 = getelementptr inbounds nuw i8, ptr %4153, i64 384
  %4295 = getelementptr inbounds nuw i8, ptr %4153, i64 1984
  %4296 = icmp eq <2 x i64> %4203, zeroinitializer
  br label %4297

4297:                                             ; preds = %4288, %4376
  %4298 = phi <2 x double> [ %4243, %4288 ], [ %4357, %4376 ]
  %4299 = phi <2 x double> [ %4289, %4288 ], [ %4356, %4376 ]
  %4300 = phi <2 x double> [ %4238, %4288 ], [ %4358, %4376 ]
  %4301 = phi <2 x double> [ %4220, %4288 ], [ %4359, %4376 ]
  %4302 = phi i64 [ %4218, %4288 ], [ %4382, %4376 ]
  %4303 = icmp eq i64 %4302, 0
  br i1 %4303, label %4304, label %4308

4304:                                             ; preds = %4297
  %4305 = fdiv <2 x double> zeroinitializer, %4300
  %4306 = fsub <2 x double> %4299, %4299
  %4307 = fmul <2 x double> %4305, %4306
  br label %4353

4308:                                             ; preds = %4297
  %4309 = getelementptr <2 x double>, ptr %4285, i64 %4302
  %4310 = load <2 x double>, ptr %4309, align 16, !tbaa !26
  %4311 = load i64, ptr %4244, align 16, !tbaa !31
  %4312 = icmp sgt i64 %4302, %4311
  br i1 %4312, label %4315, label %4313

4313:                                             ; preds = %4308
  %4314 = load <2 x double>, ptr %4290, align 16, !tbaa !26
  br label %4323

4315:                                             ; preds = %4308
  %4316 = load <2 x double>, ptr %4291, align 16, !tbaa !26
  %4317 = load <2 x double>, ptr %4292, align 16, !tbaa !26
  %4318 = load <2 x double>, ptr %4293, align 16, !tbaa !26
  %4319 = fmul <2 x double> %4310, %4318
  %4320 = fmul <2 x double> %4319, splat (double 0x3FD5555555555555)
  %4321 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4317, <2 x double> splat (double 5.000000e-01), <2 x double> %4320)
  %4322 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4310, <2 x double> %4321, <2 x double> %4316)
  br label %4323

4323:                                             ; preds = %4313, %4315
  %4324 = phi <2 x double> [ %4322, %4315 ], [ %4314, %4313 ]
  %4325 = fmul <2 x double> %4310, %4324
  %4326 = icmp slt i64 %4302, %4311
  br i1 %4326, label %4327, label %4334

4327:                                             ; preds = %4323
  %4328 = load ptr, ptr %4295, align 16, !tbaa !67
  %4329 = getelementptr inbounds nuw <2 x double>, ptr %4328, i64 %4302
  %4330 = load <2 x double>, ptr %4329, align 16, !tbaa !26
  %4331 = load <2 x double>, ptr %4294, align 16, !tbaa !26
  %4332 = fmul <2 x double> %4330, %4331
  %4333 = fmul <2 x double> %4330, %4331
  br label %4343

4334:                                             ; preds = %4323
  %4335 = load <2 x double>, ptr %4294, align 16, !tbaa !26
  %4336 = load ptr, ptr %4295, align 16, !tbaa !67
  %4337 = getelementptr inbounds nuw <2 x double>, ptr %4336, i64 %4302
  %4338 = load <2 x double>, ptr %4337, align 16, !tbaa !26
  %4339 = fsub <2 x double> %4238, %4335
  %4340 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4338, <2 x double> %4339, <2 x double> %4335)
  %4341 = fsub <2 x double> %4211, %4335
  %4342 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4338, <2 x double> %4341, <2 x double> %4335)
  br label %4343

4343:                                             ; preds = %4334, %4327
  %4344 = phi <2 x double> [ %4332, %4327 ], [ %4340, %4334 ]
  %4345 = phi <2 x double> [ %4333, %4327 ], [ %4342, %4334 ]
  %4346 = fsub <2 x double> %4345, %4344
  %4347 = fsub <2 x double> %4300, %4344
  %4348 = fdiv <2 x double> %4346, %4347
  %4349 = fsub <2 x double> %4325, %4299
  %4350 = fmul <2 x double> %4349, %4348
  %4351 = getelementptr <2 x double>, ptr %4286, i64 %4302
  %4352 = load <2 x double>, ptr %4351, align 16, !tbaa !26
  br label %4353

4353:                                             ; preds = %4343, %4304
  %4354 = phi <2 x double> [ %4350, %4343 ], [ %4307, %4304 ]
  %4355 = phi <2 x double> [ %4348, %4343 ], [ %4305, %4304 ]
  %4356 = phi <2 x double> [ %4325, %4343 ], [ %4299, %4304 ]
  %4357 = phi <2 x double> [ %4310, %4343 ], [ %4298, %4304 ]
  %4358 = phi <2 x double> [ %4344, %4343 ], [ zeroinitializer, %4304 ]
  %4359 = phi <2 x double> [ %4352, %4343 ], [ %4301, %4304 ]
  %4360 = getelementptr inbounds nuw <2 x double>, ptr %4217, i64 %4302
  %4361 = fsub <2 x double> %4359, %4301
  %4362 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4361, <2 x double> %4355, <2 x double> %4301)
  %4363 = load <2 x double>, ptr %4360, align 16, !tbaa !26
  %4364 = select <2 x i1> %4296, <2 x double> %4363, <2 x double> %4362
  store <2 x double> %4364, ptr %4360, align 16, !tbaa !26
  %4365 = getelementptr inbounds nuw <2 x double>, ptr %4241, i64 %4302
  %4366 = load i64, ptr %4244, align 16, !tbaa !31
  %4367 = icmp slt i64 %4302, %4366
  br i1 %4367, label %4368, label %4370

4368:                                             ; preds = %4353
  %4369 = load <2 x double>, ptr %4290, align 16, !tbaa !26
  br label %4376

4370:                                             ; preds = %4353
  %4371 = load <2 x double>, ptr %4291, align 16, !tbaa !26
  %4372 = load <2 x double>, ptr %4292, align 16, !tbaa !26
  %4373 = load <2 x double>, ptr %4293, align 16, !tbaa !26
  %4374 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4298, <2 x double> %4373, <2 x double> %4372)
  %4375 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4298, <2 x double> %4374, <2 x double> %4371)
  br label %4376

4376:                                             ; preds = %4370, %4368
  %4377 = phi <2 x double> [ %4369, %4368 ], [ %4375, %4370 ]
  %4378 = fdiv <2 x double> %4354, %4377
  %4379 = fadd <2 x double> %4298, %4378
  %4380 = load <2 x double>, ptr %4365, align 16, !tbaa !26
  %4381 = select <2 x i1> %4296, <2 x double> %4380, <2 x double> %4379
  store <2 x double> %4381, ptr %4365, align 16, !tbaa !26
  %4382 = add nsw i64 %4302, -1
  %4383 = icmp sgt i64 %4302, 0
  br i1 %4383, label %4297, label %4384, !llvm.loop !128

4384:                                             ; preds = %4376
  %4385 = load ptr, ptr %4279, align 8, !tbaa !56
  %4386 = load i64, ptr %132, align 16, !tbaa !21
  %4387 = load i64, ptr %4244, align 16, !tbaa !31
  %4388 = add nsw i64 %4386, -1
  br label %4389

4389:                                             ; preds = %4384, %4275
  %4390 = phi i64 [ %4388, %4384 ], [ %4218, %4275 ]
  %4391 = phi i64 [ %4387, %4384 ], [ %4245, %4275 ]
  %4392 = phi i64 [ %4386, %4384 ], [ %4207, %4275 ]
  %4393 = phi ptr [ %4385, %4384 ], [ %4276, %4275 ]
  %4394 = getelementptr inbounds <2 x double>, ptr %4393, i64 %4390
  %4395 = load <2 x double>, ptr %4394, align 16, !tbaa !26
  %4396 = icmp sgt i64 %4392, %4391
  br i1 %4396, label %4400, label %4397

4397:                                             ; preds = %4389
  %4398 = getelementptr inbounds nuw i8, ptr %4153, i64 160
  %4399 = load <2 x double>, ptr %4398, align 16, !tbaa !26
  br label %4411

4400:                                             ; preds = %4389
  %4401 = getelementptr inbounds nuw i8, ptr %4153, i64 96
  %4402 = load <2 x double>, ptr %4401, align 16, !tbaa !26
  %4403 = getelementptr inbounds nuw i8, ptr %4153, i64 112
  %4404 = load <2 x double>, ptr %4403, align 16, !tbaa !26
  %4405 = getelementptr inbounds nuw i8, ptr %4153, i64 128
  %4406 = load <2 x double>, ptr %4405, align 16, !tbaa !26
  %4407 = fmul <2 x double> %4395, %4406
  %4408 = fmul <2 x double> %4407, splat (double 0x3FD5555555555555)
  %4409 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4404, <2 x double> splat (double 5.000000e-01), <2 x double> %4408)
  %4410 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4395, <2 x double> %4409, <2 x double> %4402)
  br label %4411

4411:                                             ; preds = %4400, %4397
  %4412 = phi <2 x double> [ %4399, %4397 ], [ %4410, %4400 ]
  %4413 = getelementptr i8, ptr %4393, i64 -16
  %4414 = icmp sgt i64 %4392, 0
  br i1 %4414, label %4415, label %4424

4415:                                             ; preds = %4411
  %4416 = fmul <2 x double> %4395, %4412
  %4417 = getelementptr inbounds nuw i8, ptr %4153, i64 160
  %4418 = getelementptr inbounds nuw i8, ptr %4153, i64 96
  %4419 = getelementptr inbounds nuw i8, ptr %4153, i64 112
  %4420 = getelementptr inbounds nuw i8, ptr %4153, i64 128
  %4421 = getelementptr inbounds nuw i8, ptr %4153, i64 384
  %4422 = getelementptr inbounds nuw i8, ptr %4153, i64 1984
  %4423 = icmp eq <2 x i64> %4203, zeroinitializer
  br label %4432

4424:                                             ; preds = %4496, %4411
  %4425 = icmp sgt i64 %4208, 0
  br i1 %4425, label %4426, label %4504

4426:                                             ; preds = %4424
  %4427 = getelementptr inbounds nuw i8, ptr %4153, i64 2072
  %4428 = icmp eq <2 x i64> %4203, zeroinitializer
  %4429 = getelementptr inbounds nuw i8, ptr %4153, i64 2080
  %4430 = getelementptr inbounds nuw i8, ptr %4153, i64 2024
  %4431 = getelementptr inbounds nuw i8, ptr %4153, i64 2032
  br label %4575

4432:                                             ; preds = %4415, %4496
  %4433 = phi <2 x double> [ %4395, %4415 ], [ %4479, %4496 ]
  %4434 = phi <2 x double> [ %4416, %4415 ], [ %4480, %4496 ]
  %4435 = phi <2 x double> [ %4238, %4415 ], [ %4478, %4496 ]
  %4436 = phi i64 [ %4390, %4415 ], [ %4502, %4496 ]
  %4437 = icmp eq i64 %4436, 0
  %4438 = load i64, ptr %4244, align 16, !tbaa !31
  br i1 %4437, label %4477, label %4439

4439:                                             ; preds = %4432
  %4440 = getelementptr <2 x double>, ptr %4413, i64 %4436
  %4441 = load <2 x double>, ptr %4440, align 16, !tbaa !26
  %4442 = icmp sgt i64 %4436, %4438
  br i1 %4442, label %4445, label %4443

4443:                                             ; preds = %4439
  %4444 = load <2 x double>, ptr %4417, align 16, !tbaa !26
  br label %4453

4445:                                             ; preds = %4439
  %4446 = load <2 x double>, ptr %4418, align 16, !tbaa !26
  %4447 = load <2 x double>, ptr %4419, align 16, !tbaa !26
  %4448 = load <2 x double>, ptr %4420, align 16, !tbaa !26
  %4449 = fmul <2 x double> %4441, %4448
  %4450 = fmul <2 x double> %4449, splat (double 0x3FD5555555555555)
  %4451 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4447, <2 x double> splat (double 5.000000e-01), <2 x double> %4450)
  %4452 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4441, <2 x double> %4451, <2 x double> %4446)
  br label %4453

4453:                                             ; preds = %4443, %4445
  %4454 = phi <2 x double> [ %4452, %4445 ], [ %4444, %4443 ]
  %4455 = fmul <2 x double> %4441, %4454
  %4456 = icmp slt i64 %4436, %4438
  br i1 %4456, label %4457, label %4464

4457:                                             ; preds = %4453
  %4458 = load ptr, ptr %4422, align 16, !tbaa !67
  %4459 = getelementptr inbounds nuw <2 x double>, ptr %4458, i64 %4436
  %4460 = load <2 x double>, ptr %4459, align 16, !tbaa !26
  %4461 = load <2 x double>, ptr %4421, align 16, !tbaa !26
  %4462 = fmul <2 x double> %4460, %4461
  %4463 = fmul <2 x double> %4460, %4461
  br label %4473

4464:                                             ; preds = %4453
  %4465 = load <2 x double>, ptr %4421, align 16, !tbaa !26
  %4466 = load ptr, ptr %4422, align 16, !tbaa !67
  %4467 = getelementptr inbounds nuw <2 x double>, ptr %4466, i64 %4436
  %4468 = load <2 x double>, ptr %4467, align 16, !tbaa !26
  %4469 = fsub <2 x double> %4238, %4465
  %4470 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4468, <2 x double> %4469, <2 x double> %4465)
  %4471 = fsub <2 x double> %4211, %4465
  %4472 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4468, <2 x double> %4471, <2 x double> %4465)
  br label %4473

4473:                                             ; preds = %4464, %4457
  %4474 = phi <2 x double> [ %4462, %4457 ], [ %4470, %4464 ]
  %4475 = phi <2 x double> [ %4463, %4457 ], [ %4472, %4464 ]
  %4476 = fsub <2 x double> %4475, %4474
  br label %4477

4477:                                             ; preds = %4432, %4473
  %4478 = phi <2 x double> [ %4474, %4473 ], [ zeroinitializer, %4432 ]
  %4479 = phi <2 x double> [ %4441, %4473 ], [ %4433, %4432 ]
  %4480 = phi <2 x double> [ %4455, %4473 ], [ %4434, %4432 ]
  %4481 = phi <2 x double> [ %4476, %4473 ], [ zeroinitializer, %4432 ]
  %4482 = fsub <2 x double> %4435, %4478
  %4483 = fdiv <2 x double> %4481, %4482
  %4484 = fsub <2 x double> %4480, %4434
  %4485 = fmul <2 x double> %4484, %4483
  %4486 = getelementptr inbounds nuw <2 x double>, ptr %4393, i64 %4436
  %4487 = icmp slt i64 %4436, %4438
  br i1 %4487, label %4488, label %4490

4488:                                             ; preds = %4477
  %4489 = load <2 x double>, ptr %4417, align 16, !tbaa !26
  br label %4496

4490:                                             ; preds = %4477
  %4491 = load <2 x double>, ptr %4418, align 16, !tbaa !26
  %4492 = load <2 x double>, ptr %4419, align 16, !tbaa !26
  %4493 = load <2 x double>, ptr %4420, align 16, !tbaa !26
  %4494 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4433, <2 x double> %4493, <2 x double> %4492)
  %4495 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4433, <2 x double> %4494, <2 x double> %4491)
  br label %4496

4496:                                             ; preds = %4490, %4488
  %4497 = phi <2 x double> [ %4489, %4488 ], [ %4495, %4490 ]
  %4498 = fdiv <2 x double> %4485, %4497
  %4499 = fadd <2 x double> %4433, %4498
  %4500 = load <2 x double>, ptr %4486, align 16, !tbaa !26
  %4501 = select <2 x i1> %4423, <2 x double> %4500, <2 x double> %4499
  store <2 x double> %4501, ptr %4486, align 16, !tbaa !26
  %4502 = add nsw i64 %4436, -1
  %4503 = icmp sgt i64 %4436, 0
  br i1 %4503, label %4432, label %4424, !llvm.loop !128

4504:                                             ; preds = %4575, %4424
  %4505 = getelementptr inbounds nuw i8, ptr %4153, i64 2072
  %4506 = load ptr, ptr %4505, align 8, !tbaa !49
  %4507 = getelementptr inbounds <2 x double>, ptr %4506, i64 %4208
  %4508 = getelementptr inbounds nuw i8, ptr %4153, i64 352
  %4509 = load <2 x double>, ptr %4508, align 16, !tbaa !26
  %4510 = load <2 x double>, ptr %4507, align 16, !tbaa !26
  %4511 = icmp eq <2 x i64> %4203, zeroinitializer
  %4512 = select <2 x i1> %4511, <2 x double> %4510, <2 x double> %4509
  store <2 x double> %4512, ptr %4507, align 16, !tbaa !26
  %4513 = getelementptr inbounds nuw i8, ptr %4153, i64 2080
  %4514 = load ptr, ptr %4513, align 16, !tbaa !59
  %4515 = getelementptr inbounds <2 x double>, ptr %4514, i64 %4208
  %4516 = load <2 x double>, ptr %4508, align 16, !tbaa !26
  %4517 = load <2 x double>, ptr %4515, align 16, !tbaa !26
  %4518 = select <2 x i1> %4511, <2 x double> %4517, <2 x double> %4516
  store <2 x double> %4518, ptr %4515, align 16, !tbaa !26
  %4519 = getelementptr inbounds nuw i8, ptr %4153, i64 1120
  %4520 = fneg <2 x double> %4239
  %4521 = getelementptr inbounds nuw i8, ptr %4153, i64 192
  %4522 = load <2 x double>, ptr %4209, align 16, !tbaa !26
  %4523 = select <2 x i1> %4511, <2 x double> %4522, <2 x double> %4227
  store <2 x double> %4523, ptr %4209, align 16, !tbaa !26
  %4524 = getelementptr inbounds nuw i8, ptr %4153, i64 944
  %4525 = load <2 x double>, ptr %4524, align 16, !tbaa !26
  %4526 = select <2 x i1> %4511, <2 x double> %4525, <2 x double> %4238
  store <2 x double> %4526, ptr %4524, align 16, !tbaa !26
  %4527 = getelementptr inbounds nuw i8, ptr %4153, i64 1104
  %4528 = load <2 x double>, ptr %4527, align 16, !tbaa !26
  %4529 = select <2 x i1> %4511, <2 x double> %4528, <2 x double> %4238
  store <2 x double> %4529, ptr %4527, align 16, !tbaa !26
  %4530 = getelementptr inbounds nuw i8, ptr %4153, i64 976
  %4531 = load <2 x double>, ptr %4530, align 16, !tbaa !26
  %4532 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4520, <2 x double> %4221, <2 x double> %4531)
  %4533 = select <2 x i1> %4511, <2 x double> %4531, <2 x double> %4532
  store <2 x double> %4533, ptr %4530, align 16, !tbaa !26
  %4534 = getelementptr inbounds nuw i8, ptr %4153, i64 960
  %4535 = load <2 x double>, ptr %4534, align 16, !tbaa !26
  %4536 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4239, <2 x double> %4221, <2 x double> %4535)
  %4537 = select <2 x i1> %4511, <2 x double> %4535, <2 x double> %4536
  store <2 x double> %4537, ptr %4534, align 16, !tbaa !26
  %4538 = getelementptr inbounds nuw i8, ptr %4153, i64 1040
  %4539 = load <2 x double>, ptr %4538, align 16, !tbaa !26
  %4540 = load <2 x double>, ptr %4521, align 16, !tbaa !26
  %4541 = fneg <2 x double> %4540
  %4542 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4541, <2 x double> %4213, <2 x double> %4283)
  %4543 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4239, <2 x double> %4542, <2 x double> %4539)
  %4544 = select <2 x i1> %4511, <2 x double> %4539, <2 x double> %4543
  store <2 x double> %4544, ptr %4538, align 16, !tbaa !26
  %4545 = load <2 x double>, ptr %4519, align 16, !tbaa !26
  %4546 = select <2 x i1> %4511, <2 x double> %4545, <2 x double> %4227
  store <2 x double> %4546, ptr %4519, align 16, !tbaa !26
  %4547 = getelementptr inbounds nuw i8, ptr %4153, i64 1136
  %4548 = load <2 x double>, ptr %4547, align 16, !tbaa !26
  %4549 = select <2 x i1> %4511, <2 x double> %4548, <2 x double> %4238
  store <2 x double> %4549, ptr %4547, align 16, !tbaa !26
  %4550 = getelementptr inbounds nuw i8, ptr %4153, i64 1296
  %4551 = load <2 x double>, ptr %4550, align 16, !tbaa !26
  %4552 = select <2 x i1> %4511, <2 x double> %4551, <2 x double> %4238
  store <2 x double> %4552, ptr %4550, align 16, !tbaa !26
  %4553 = getelementptr inbounds nuw i8, ptr %4153, i64 1168
  %4554 = load <2 x double>, ptr %4553, align 16, !tbaa !26
  %4555 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4520, <2 x double> %4221, <2 x double> %4554)
  %4556 = select <2 x i1> %4511, <2 x double> %4554, <2 x double> %4555
  store <2 x double> %4556, ptr %4553, align 16, !tbaa !26
  %4557 = getelementptr inbounds nuw i8, ptr %4153, i64 1152
  %4558 = load <2 x double>, ptr %4557, align 16, !tbaa !26
  %4559 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4239, <2 x double> %4221, <2 x double> %4558)
  %4560 = select <2 x i1> %4511, <2 x double> %4558, <2 x double> %4559
  store <2 x double> %4560, ptr %4557, align 16, !tbaa !26
  %4561 = getelementptr inbounds nuw i8, ptr %4153, i64 1232
  %4562 = load <2 x double>, ptr %4561, align 16, !tbaa !26
  %4563 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4541, <2 x double> %4213, <2 x double> %4278)
  %4564 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4239, <2 x double> %4563, <2 x double> %4562)
  %4565 = select <2 x i1> %4511, <2 x double> %4562, <2 x double> %4564
  store <2 x double> %4565, ptr %4561, align 16, !tbaa !26
  %4566 = load <2 x i64>, ptr %4167, align 16, !tbaa !26
  %4567 = or <2 x i64> %4566, %4203
  store <2 x i64> %4567, ptr %4167, align 16, !tbaa !26
  %4568 = load <2 x double>, ptr %224, align 16, !tbaa !26
  %4569 = fmul <2 x double> %4568, splat (double 4.000000e+01)
  %4570 = fcmp olt <2 x double> %4151, %4569
  %4571 = select <2 x i1> %4570, <2 x double> %4151, <2 x double> %4569
  %4572 = icmp ne <2 x i64> %4203, zeroinitializer
  %4573 = select <2 x i1> %4194, <2 x i1> %4572, <2 x i1> zeroinitializer
  %4574 = select <2 x i1> %4573, <2 x double> %4571, <2 x double> %4151
  br label %4606

4575:                                             ; preds = %4426, %4575
  %4576 = phi i64 [ 0, %4426 ], [ %4604, %4575 ]
  %4577 = uitofp nneg i64 %4576 to double
  %4578 = insertelement <2 x double> poison, double %4577, i64 0
  %4579 = shufflevector <2 x double> %4578, <2 x double> poison, <2 x i32> zeroinitializer
  %4580 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4579, <2 x double> %4284, <2 x double> %4227)
  %4581 = load <2 x double>, ptr %4228, align 16, !tbaa !26
  %4582 = load <2 x double>, ptr %4230, align 16, !tbaa !26
  %4583 = load <2 x double>, ptr %4232, align 16, !tbaa !26
  %4584 = load <2 x double>, ptr %4234, align 16, !tbaa !26
  %4585 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4580, <2 x double> %4584, <2 x double> %4583)
  %4586 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4580, <2 x double> %4585, <2 x double> %4582)
  %4587 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4580, <2 x double> %4586, <2 x double> %4581)
  %4588 = load ptr, ptr %4427, align 8, !tbaa !49
  %4589 = getelementptr inbounds nuw <2 x double>, ptr %4588, i64 %4576
  %4590 = load <2 x double>, ptr %4589, align 16, !tbaa !26
  %4591 = select <2 x i1> %4428, <2 x double> %4590, <2 x double> %4587
  store <2 x double> %4591, ptr %4589, align 16, !tbaa !26
  %4592 = load ptr, ptr %4429, align 16, !tbaa !59
  %4593 = getelementptr inbounds nuw <2 x double>, ptr %4592, i64 %4576
  %4594 = load <2 x double>, ptr %4593, align 16, !tbaa !26
  %4595 = select <2 x i1> %4428, <2 x double> %4594, <2 x double> %4587
  store <2 x double> %4595, ptr %4593, align 16, !tbaa !26
  %4596 = load ptr, ptr %4430, align 8, !tbaa !50
  %4597 = getelementptr inbounds nuw <2 x double>, ptr %4596, i64 %4576
  %4598 = load <2 x double>, ptr %4597, align 16, !tbaa !26
  %4599 = select <2 x i1> %4428, <2 x double> %4598, <2 x double> %4213
  store <2 x double> %4599, ptr %4597, align 16, !tbaa !26
  %4600 = load ptr, ptr %4431, align 16, !tbaa !61
  %4601 = getelementptr inbounds nuw <2 x double>, ptr %4600, i64 %4576
  %4602 = load <2 x double>, ptr %4601, align 16, !tbaa !26
  %4603 = select <2 x i1> %4428, <2 x double> %4602, <2 x double> %4213
  store <2 x double> %4603, ptr %4601, align 16, !tbaa !26
  %4604 = add nuw nsw i64 %4576, 1
  %4605 = icmp eq i64 %4604, %4208
  br i1 %4605, label %4504, label %4575, !llvm.loop !129

4606:                                             ; preds = %4504, %4149
  %4607 = phi <2 x double> [ %4574, %4504 ], [ %4151, %4149 ]
  %4608 = add nuw nsw i64 %4150, 1
  %4609 = load i64, ptr %169, align 8, !tbaa !20
  %4610 = icmp slt i64 %4608, %4609
  br i1 %4610, label %4149, label %4611, !llvm.loop !130

4611:                                             ; preds = %4606
  %4612 = load <2 x double>, ptr %149, align 16, !tbaa !26
  br label %4613

4613:                                             ; preds = %4611, %4107
  %4614 = phi <2 x double> [ %4116, %4107 ], [ %4612, %4611 ]
  %4615 = phi <2 x double> [ %4139, %4107 ], [ %4607, %4611 ]
  %4616 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %4617 = select <2 x i1> %3698, <2 x double> %4616, <2 x double> %4615
  store <2 x double> %4617, ptr %152, align 16, !tbaa !26
  %4618 = load ptr, ptr %225, align 16, !tbaa !38
  %4619 = getelementptr inbounds nuw i8, ptr %4618, i64 16
  store <2 x double> %4614, ptr %4618, align 16, !tbaa !26
  %4620 = load <2 x double>, ptr %226, align 16, !tbaa !26
  %4621 = getelementptr inbounds nuw i8, ptr %4618, i64 32
  store <2 x double> %4620, ptr %4619, align 16, !tbaa !26
  %4622 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %4623 = getelementptr inbounds nuw i8, ptr %4618, i64 48
  store <2 x double> %4622, ptr %4621, align 16, !tbaa !26
  %4624 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %4625 = getelementptr inbounds nuw i8, ptr %4618, i64 64
  store <2 x double> %4624, ptr %4623, align 16, !tbaa !26
  %4626 = load i64, ptr %169, align 8, !tbaa !20
  %4627 = icmp sgt i64 %4626, 0
  br i1 %4627, label %4632, label %4628

4628:                                             ; preds = %4632, %4613
  %4629 = phi ptr [ %4625, %4613 ], [ %4638, %4632 ]
  %4630 = load i64, ptr %227, align 8, !tbaa !131
  %4631 = icmp eq i64 %4630, 0
  br i1 %4631, label %4767, label %4642

4632:                                             ; preds = %4613, %4632
  %4633 = phi ptr [ %4638, %4632 ], [ %4625, %4613 ]
  %4634 = phi i64 [ %4639, %4632 ], [ 0, %4613 ]
  %4635 = load ptr, ptr %142, align 8, !tbaa !28
  %4636 = getelementptr inbounds nuw %struct.Piece, ptr %4635, i64 %4634, i32 35
  %4637 = load <2 x double>, ptr %4636, align 16, !tbaa !26
  %4638 = getelementptr inbounds nuw i8, ptr %4633, i64 16
  store <2 x double> %4637, ptr %4633, align 16, !tbaa !26
  %4639 = add nuw nsw i64 %4634, 1
  %4640 = load i64, ptr %169, align 8, !tbaa !20
  %4641 = icmp slt i64 %4639, %4640
  br i1 %4641, label %4632, label %4628, !llvm.loop !132

4642:                                             ; preds = %4628
  %4643 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %4644 = getelementptr inbounds nuw i8, ptr %4629, i64 16
  store <2 x double> %4643, ptr %4629, align 16, !tbaa !26
  %4645 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %4646 = getelementptr inbounds nuw i8, ptr %4629, i64 32
  store <2 x double> %4645, ptr %4644, align 16, !tbaa !26
  %4647 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %4648 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %4649 = fsub <2 x double> %4647, %4648
  %4650 = fcmp ogt <2 x double> %4649, zeroinitializer
  %4651 = select <2 x i1> %4650, <2 x double> %4649, <2 x double> zeroinitializer
  store <2 x double> %4651, ptr %4646, align 16, !tbaa !26
  %4652 = load i64, ptr %169, align 8, !tbaa !20
  %4653 = icmp sgt i64 %4652, 0
  br i1 %4653, label %4654, label %4767

4654:                                             ; preds = %4642
  %4655 = getelementptr inbounds nuw i8, ptr %4629, i64 48
  br label %4656

4656:                                             ; preds = %4654, %4656
  %4657 = phi ptr [ %4763, %4656 ], [ %4655, %4654 ]
  %4658 = phi i64 [ %4764, %4656 ], [ 0, %4654 ]
  %4659 = load ptr, ptr %142, align 8, !tbaa !28
  %4660 = getelementptr inbounds nuw %struct.Piece, ptr %4659, i64 %4658
  %4661 = getelementptr inbounds nuw i8, ptr %4660, i64 1904
  %4662 = load ptr, ptr %4661, align 16, !tbaa !46
  %4663 = load i64, ptr %132, align 16, !tbaa !21
  %4664 = getelementptr <2 x double>, ptr %4662, i64 %4663
  %4665 = getelementptr i8, ptr %4664, i64 -16
  %4666 = load <2 x double>, ptr %4665, align 16, !tbaa !26
  %4667 = getelementptr inbounds nuw i8, ptr %4660, i64 1712
  %4668 = load <2 x double>, ptr %4667, align 16, !tbaa !26
  %4669 = getelementptr inbounds nuw i8, ptr %4660, i64 1392
  %4670 = load <2 x double>, ptr %4669, align 16, !tbaa !26
  %4671 = fsub <2 x double> %4670, %4666
  %4672 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4668, <2 x double> %4671, <2 x double> %4666)
  %4673 = getelementptr inbounds nuw i8, ptr %4657, i64 16
  store <2 x double> %4672, ptr %4657, align 16, !tbaa !26
  %4674 = getelementptr inbounds nuw i8, ptr %4660, i64 1600
  %4675 = load <2 x double>, ptr %4674, align 16, !tbaa !26
  %4676 = getelementptr inbounds nuw i8, ptr %4657, i64 32
  store <2 x double> %4675, ptr %4673, align 16, !tbaa !26
  %4677 = load <2 x double>, ptr %4660, align 16, !tbaa !26
  %4678 = getelementptr inbounds nuw i8, ptr %4660, i64 928
  %4679 = load <2 x double>, ptr %4678, align 16, !tbaa !26
  %4680 = fsub <2 x double> %4677, %4679
  %4681 = getelementptr inbounds nuw i8, ptr %4657, i64 48
  store <2 x double> %4680, ptr %4676, align 16, !tbaa !26
  %4682 = getelementptr inbounds nuw i8, ptr %4660, i64 1008
  %4683 = load <2 x double>, ptr %4682, align 16, !tbaa !26
  %4684 = getelementptr inbounds nuw i8, ptr %4657, i64 64
  store <2 x double> %4683, ptr %4681, align 16, !tbaa !26
  %4685 = getelementptr inbounds nuw i8, ptr %4660, i64 992
  %4686 = load <2 x double>, ptr %4685, align 16, !tbaa !26
  %4687 = getelementptr inbounds nuw i8, ptr %4657, i64 80
  store <2 x double> %4686, ptr %4684, align 16, !tbaa !26
  %4688 = getelementptr inbounds nuw i8, ptr %4660, i64 960
  %4689 = load <2 x double>, ptr %4688, align 16, !tbaa !26
  %4690 = getelementptr inbounds nuw i8, ptr %4657, i64 96
  store <2 x double> %4689, ptr %4687, align 16, !tbaa !26
  %4691 = getelementptr inbounds nuw i8, ptr %4660, i64 1024
  %4692 = load <2 x double>, ptr %4691, align 16, !tbaa !26
  %4693 = getelementptr inbounds nuw i8, ptr %4657, i64 112
  store <2 x double> %4692, ptr %4690, align 16, !tbaa !26
  %4694 = getelementptr inbounds nuw i8, ptr %4660, i64 2024
  %4695 = load i64, ptr %133, align 8, !tbaa !22
  %4696 = sitofp i64 %4695 to double
  %4697 = tail call double @llvm.fmuladd.f64(double %4696, double 7.500000e-01, double -5.000000e-01)
  %4698 = fcmp ogt double %4697, 0.000000e+00
  %4699 = select i1 %4698, double %4697, double 0.000000e+00
  %4700 = fptosi double %4699 to i64
  %4701 = add nsw i64 %4695, -2
  %4702 = tail call i64 @llvm.smin.i64(i64 %4701, i64 %4700)
  %4703 = sitofp i64 %4702 to double
  %4704 = fsub double %4697, %4703
  %4705 = fsub double 1.000000e+00, %4704
  %4706 = insertelement <2 x double> poison, double %4705, i64 0
  %4707 = shufflevector <2 x double> %4706, <2 x double> poison, <2 x i32> zeroinitializer
  %4708 = load ptr, ptr %4694, align 8, !tbaa !50
  %4709 = getelementptr inbounds <2 x double>, ptr %4708, i64 %4702
  %4710 = load <2 x double>, ptr %4709, align 16, !tbaa !26
  %4711 = insertelement <2 x double> poison, double %4704, i64 0
  %4712 = shufflevector <2 x double> %4711, <2 x double> poison, <2 x i32> zeroinitializer
  %4713 = getelementptr i8, ptr %4709, i64 16
  %4714 = load <2 x double>, ptr %4713, align 16, !tbaa !26
  %4715 = fmul <2 x double> %4714, %4712
  %4716 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4707, <2 x double> %4710, <2 x double> %4715)
  store <2 x double> %4716, ptr %4693, align 16, !tbaa !26
  %4717 = load i64, ptr %133, align 8, !tbaa !22
  %4718 = sitofp i64 %4717 to double
  %4719 = tail call double @llvm.fmuladd.f64(double %4718, double 5.000000e-01, double -5.000000e-01)
  %4720 = fcmp ogt double %4719, 0.000000e+00
  %4721 = select i1 %4720, double %4719, double 0.000000e+00
  %4722 = fptosi double %4721 to i64
  %4723 = add nsw i64 %4717, -2
  %4724 = tail call i64 @llvm.smin.i64(i64 %4723, i64 %4722)
  %4725 = sitofp i64 %4724 to double
  %4726 = fsub double %4719, %4725
  %4727 = fsub double 1.000000e+00, %4726
  %4728 = insertelement <2 x double> poison, double %4727, i64 0
  %4729 = shufflevector <2 x double> %4728, <2 x double> poison, <2 x i32> zeroinitializer
  %4730 = load ptr, ptr %4694, align 8, !tbaa !50
  %4731 = getelementptr inbounds <2 x double>, ptr %4730, i64 %4724
  %4732 = load <2 x double>, ptr %4731, align 16, !tbaa !26
  %4733 = insertelement <2 x double> poison, double %4726, i64 0
  %4734 = shufflevector <2 x double> %4733, <2 x double> poison, <2 x i32> zeroinitializer
  %4735 = getelementptr i8, ptr %4731, i64 16
  %4736 = load <2 x double>, ptr %4735, align 16, !tbaa !26
  %4737 = fmul <2 x double> %4736, %4734
  %4738 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4729, <2 x double> %4732, <2 x double> %4737)
  %4739 = getelementptr inbounds nuw i8, ptr %4657, i64 128
  store <2 x double> %4738, ptr %4739, align 16, !tbaa !26
  %4740 = load i64, ptr %133, align 8, !tbaa !22
  %4741 = sitofp i64 %4740 to double
  %4742 = tail call double @llvm.fmuladd.f64(double %4741, double 2.500000e-01, double -5.000000e-01)
  %4743 = fcmp ogt double %4742, 0.000000e+00
  %4744 = select i1 %4743, double %4742, double 0.000000e+00
  %4745 = fptosi double %4744 to i64
  %4746 = add nsw i64 %4740, -2
  %4747 = tail call i64 @llvm.smin.i64(i64 %4746, i64 %4745)
  %4748 = sitofp i64 %4747 to double
  %4749 = fsub double %4742, %4748
  %4750 = fsub double 1.000000e+00, %4749
  %4751 = insertelement <2 x double> poison, double %4750, i64 0
  %4752 = shufflevector <2 x double> %4751, <2 x double> poison, <2 x i32> zeroinitializer
  %4753 = load ptr, ptr %4694, align 8, !tbaa !50
  %4754 = getelementptr inbounds <2 x double>, ptr %4753, i64 %4747
  %4755 = load <2 x double>, ptr %4754, align 16, !tbaa !26
  %4756 = insertelement <2 x double> poison, double %4749, i64 0
  %4757 = shufflevector <2 x double> %4756, <2 x double> poison, <2 x i32> zeroinitializer
  %4758 = getelementptr i8, ptr %4754, i64 16
  %4759 = load <2 x double>, ptr %4758, align 16, !tbaa !26
  %4760 = fmul <2 x double> %4759, %4757
  %4761 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4752, <2 x double> %4755, <2 x double> %4760)
  %4762 = getelementptr inbounds nuw i8, ptr %4657, i64 144
  store <2 x double> %4761, ptr %4762, align 16, !tbaa !26
  %4763 = getelementptr inbounds nuw i8, ptr %4657, i64 160
  %4764 = add nuw nsw i64 %4658, 1
  %4765 = load i64, ptr %169, align 8, !tbaa !20
  %4766 = icmp slt i64 %4764, %4765
  br i1 %4766, label %4656, label %4767, !llvm.loop !133

4767:                                             ; preds = %4656, %4642, %4628
  %4768 = getelementptr inbounds nuw i8, ptr %4629, i64 48
  %4769 = extractelement <2 x i64> %3638, i64 0
  %4770 = extractelement <2 x i64> %3638, i64 1
  br label %4771

4771:                                             ; preds = %4767, %4914
  %4772 = phi i1 [ true, %4767 ], [ false, %4914 ]
  %4773 = phi i64 [ %4769, %4767 ], [ %4770, %4914 ]
  %4774 = phi i64 [ 0, %4767 ], [ 1, %4914 ]
  %4775 = icmp eq i64 %4773, 0
  br i1 %4775, label %4914, label %4776

4776:                                             ; preds = %4771
  %4777 = getelementptr inbounds nuw [2 x i64], ptr %228, i64 0, i64 %4774
  %4778 = load i64, ptr %4777, align 8, !tbaa !30
  %4779 = load i64, ptr %229, align 8, !tbaa !134
  %4780 = icmp eq i64 %4778, %4779
  br i1 %4780, label %4784, label %4781

4781:                                             ; preds = %4776
  %4782 = getelementptr inbounds nuw [2 x ptr], ptr %233, i64 0, i64 %4774
  %4783 = load ptr, ptr %4782, align 8, !tbaa !135
  br label %4799

4784:                                             ; preds = %4776
  %4785 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %4774
  %4786 = load i64, ptr %4785, align 8, !tbaa !30
  %4787 = load ptr, ptr %230, align 8, !tbaa !136
  %4788 = load i64, ptr %125, align 8, !tbaa !41
  %4789 = getelementptr inbounds i64, ptr %4787, i64 %4788
  store i64 %4786, ptr %4789, align 8, !tbaa !30
  %4790 = load ptr, ptr %231, align 8, !tbaa !137
  %4791 = load i64, ptr %125, align 8, !tbaa !41
  %4792 = add nsw i64 %4791, 1
  store i64 %4792, ptr %125, align 8, !tbaa !41
  %4793 = load i64, ptr %229, align 8, !tbaa !134
  %4794 = mul nsw i64 %4793, %4791
  %4795 = load i64, ptr %232, align 8, !tbaa !15
  %4796 = mul nsw i64 %4794, %4795
  %4797 = getelementptr inbounds double, ptr %4790, i64 %4796
  %4798 = getelementptr inbounds nuw [2 x ptr], ptr %233, i64 0, i64 %4774
  store ptr %4797, ptr %4798, align 8, !tbaa !135
  br label %4799

4799:                                             ; preds = %4781, %4784
  %4800 = phi i64 [ %4778, %4781 ], [ 0, %4784 ]
  %4801 = phi ptr [ %4783, %4781 ], [ %4797, %4784 ]
  %4802 = add nsw i64 %4800, 1
  store i64 %4802, ptr %4777, align 8, !tbaa !30
  %4803 = load i64, ptr %232, align 8, !tbaa !15
  %4804 = mul nsw i64 %4803, %4800
  %4805 = getelementptr inbounds double, ptr %4801, i64 %4804
  %4806 = load ptr, ptr %225, align 16, !tbaa !38
  %4807 = icmp ult ptr %4806, %4625
  br i1 %4807, label %4867, label %4808

4808:                                             ; preds = %4867, %4799
  %4809 = phi ptr [ %4805, %4799 ], [ %4872, %4867 ]
  %4810 = load i64, ptr %141, align 16, !tbaa !16
  %4811 = icmp sgt i64 %4810, 0
  br i1 %4811, label %4812, label %4854

4812:                                             ; preds = %4808
  %4813 = and i64 %4810, 3
  %4814 = icmp ult i64 %4810, 4
  br i1 %4814, label %4839, label %4815

4815:                                             ; preds = %4812
  %4816 = and i64 %4810, 9223372036854775804
  br label %4817

4817:                                             ; preds = %4817, %4815
  %4818 = phi i64 [ 0, %4815 ], [ %4836, %4817 ]
  %4819 = phi ptr [ %4809, %4815 ], [ %4833, %4817 ]
  %4820 = phi i64 [ 0, %4815 ], [ %4837, %4817 ]
  %4821 = getelementptr i8, ptr %4819, i64 8
  %4822 = getelementptr inbounds nuw <2 x double>, ptr %4625, i64 %4818, i64 %4774
  %4823 = load double, ptr %4822, align 8
  store double %4823, ptr %4819, align 8, !tbaa !42
  %4824 = or disjoint i64 %4818, 1
  %4825 = getelementptr i8, ptr %4819, i64 16
  %4826 = getelementptr inbounds nuw <2 x double>, ptr %4625, i64 %4824, i64 %4774
  %4827 = load double, ptr %4826, align 8
  store double %4827, ptr %4821, align 8, !tbaa !42
  %4828 = or disjoint i64 %4818, 2
  %4829 = getelementptr i8, ptr %4819, i64 24
  %4830 = getelementptr inbounds nuw <2 x double>, ptr %4625, i64 %4828, i64 %4774
  %4831 = load double, ptr %4830, align 8
  store double %4831, ptr %4825, align 8, !tbaa !42
  %4832 = or disjoint i64 %4818, 3
  %4833 = getelementptr i8, ptr %4819, i64 32
  %4834 = getelementptr inbounds nuw <2 x double>, ptr %4625, i64 %4832, i64 %4774
  %4835 = load double, ptr %4834, align 8
  store double %4835, ptr %4829, align 8, !tbaa !42
  %4836 = add nuw nsw i64 %4818, 4
  %4837 = add i64 %4820, 4
  %4838 = icmp eq i64 %4837, %4816
  br i1 %4838, label %4839, label %4817, !llvm.loop !138

4839:                                             ; preds = %4817, %4812
  %4840 = phi ptr [ poison, %4812 ], [ %4833, %4817 ]
  %4841 = phi i64 [ 0, %4812 ], [ %4836, %4817 ]
  %4842 = phi ptr [ %4809, %4812 ], [ %4833, %4817 ]
  %4843 = icmp eq i64 %4813, 0
  br i1 %4843, label %4854, label %4844

4844:                                             ; preds = %4839, %4844
  %4845 = phi i64 [ %4851, %4844 ], [ %4841, %4839 ]
  %4846 = phi ptr [ %4848, %4844 ], [ %4842, %4839 ]
  %4847 = phi i64 [ %4852, %4844 ], [ 0, %4839 ]
  %4848 = getelementptr i8, ptr %4846, i64 8
  %4849 = getelementptr inbounds nuw <2 x double>, ptr %4625, i64 %4845, i64 %4774
  %4850 = load double, ptr %4849, align 8
  store double %4850, ptr %4846, align 8, !tbaa !42
  %4851 = add nuw nsw i64 %4845, 1
  %4852 = add i64 %4847, 1
  %4853 = icmp eq i64 %4852, %4813
  br i1 %4853, label %4854, label %4844, !llvm.loop !139

4854:                                             ; preds = %4839, %4844, %4808
  %4855 = phi ptr [ %4809, %4808 ], [ %4840, %4839 ], [ %4848, %4844 ]
  %4856 = load i64, ptr %227, align 8, !tbaa !131
  %4857 = icmp eq i64 %4856, 0
  br i1 %4857, label %4914, label %4858

4858:                                             ; preds = %4854
  %4859 = getelementptr inbounds nuw double, ptr %4629, i64 %4774
  %4860 = load double, ptr %4859, align 8, !tbaa !42
  %4861 = getelementptr inbounds nuw i8, ptr %4855, i64 8
  store double %4860, ptr %4855, align 8, !tbaa !42
  %4862 = getelementptr inbounds nuw i8, ptr %4859, i64 16
  %4863 = load double, ptr %4862, align 8, !tbaa !42
  %4864 = getelementptr inbounds nuw i8, ptr %4855, i64 16
  store double %4863, ptr %4861, align 8, !tbaa !42
  %4865 = getelementptr inbounds nuw i8, ptr %4859, i64 32
  %4866 = load double, ptr %4865, align 8, !tbaa !42
  store double %4866, ptr %4864, align 8, !tbaa !42
  br i1 %4811, label %4875, label %4914

4867:                                             ; preds = %4799, %4867
  %4868 = phi ptr [ %4873, %4867 ], [ %4806, %4799 ]
  %4869 = phi ptr [ %4872, %4867 ], [ %4805, %4799 ]
  %4870 = getelementptr inbounds nuw double, ptr %4868, i64 %4774
  %4871 = load double, ptr %4870, align 8, !tbaa !42
  %4872 = getelementptr inbounds nuw i8, ptr %4869, i64 8
  store double %4871, ptr %4869, align 8, !tbaa !42
  %4873 = getelementptr inbounds nuw i8, ptr %4868, i64 16
  %4874 = icmp ult ptr %4873, %4625
  br i1 %4874, label %4867, label %4808, !llvm.loop !140

4875:                                             ; preds = %4858
  %4876 = getelementptr inbounds nuw i8, ptr %4855, i64 24
  br label %4877

4877:                                             ; preds = %4875, %4877
  %4878 = phi i64 [ %4912, %4877 ], [ 0, %4875 ]
  %4879 = phi ptr [ %4911, %4877 ], [ %4876, %4875 ]
  %4880 = mul nuw nsw i64 %4878, 160
  %4881 = getelementptr inbounds nuw i8, ptr %4768, i64 %4880
  %4882 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 0, i64 %4774
  %4883 = load double, ptr %4882, align 8
  %4884 = getelementptr inbounds nuw i8, ptr %4879, i64 8
  store double %4883, ptr %4879, align 8, !tbaa !42
  %4885 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 1, i64 %4774
  %4886 = load double, ptr %4885, align 8
  %4887 = getelementptr inbounds nuw i8, ptr %4879, i64 16
  store double %4886, ptr %4884, align 8, !tbaa !42
  %4888 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 2, i64 %4774
  %4889 = load double, ptr %4888, align 8
  %4890 = getelementptr inbounds nuw i8, ptr %4879, i64 24
  store double %4889, ptr %4887, align 8, !tbaa !42
  %4891 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 3, i64 %4774
  %4892 = load double, ptr %4891, align 8
  %4893 = getelementptr inbounds nuw i8, ptr %4879, i64 32
  store double %4892, ptr %4890, align 8, !tbaa !42
  %4894 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 4, i64 %4774
  %4895 = load double, ptr %4894, align 8
  %4896 = getelementptr inbounds nuw i8, ptr %4879, i64 40
  store double %4895, ptr %4893, align 8, !tbaa !42
  %4897 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 5, i64 %4774
  %4898 = load double, ptr %4897, align 8
  %4899 = getelementptr inbounds nuw i8, ptr %4879, i64 48
  store double %4898, ptr %4896, align 8, !tbaa !42
  %4900 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 6, i64 %4774
  %4901 = load double, ptr %4900, align 8
  %4902 = getelementptr inbounds nuw i8, ptr %4879, i64 56
  store double %4901, ptr %4899, align 8, !tbaa !42
  %4903 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 7, i64 %4774
  %4904 = load double, ptr %4903, align 8
  %4905 = getelementptr inbounds nuw i8, ptr %4879, i64 64
  store double %4904, ptr %4902, align 8, !tbaa !42
  %4906 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 8, i64 %4774
  %4907 = load double, ptr %4906, align 8
  %4908 = getelementptr inbounds nuw i8, ptr %4879, i64 72
  store double %4907, ptr %4905, align 8, !tbaa !42
  %4909 = getelementptr inbounds nuw <2 x double>, ptr %4881, i64 9, i64 %4774
  %4910 = load double, ptr %4909, align 8
  %4911 = getelementptr inbounds nuw i8, ptr %4879, i64 80
  store double %4910, ptr %4908, align 8, !tbaa !42
  %4912 = add nuw nsw i64 %4878, 1
  %4913 = icmp eq i64 %4912, %4810
  br i1 %4913, label %4914, label %4877, !llvm.loop !138

4914:                                             ; preds = %4877, %4858, %4854, %4771
  br i1 %4772, label %4771, label %4915, !llvm.loop !141

4915:                                             ; preds = %4914
  %4916 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4917 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %4918 = fsub <2 x double> %4916, %4917
  %4919 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %4920 = fadd <2 x double> %4919, splat (double -1.000000e-09)
  %4921 = fcmp oge <2 x double> %4918, %4920
  %4922 = select <2 x i1> %4921, <2 x i64> %3638, <2 x i64> zeroinitializer
  %4923 = load i64, ptr %169, align 8, !tbaa !20
  %4924 = icmp sgt i64 %4923, 0
  br i1 %4924, label %4925, label %4973

4925:                                             ; preds = %4915
  %4926 = load ptr, ptr %142, align 8, !tbaa !28
  %4927 = and i64 %4923, 3
  %4928 = icmp ult i64 %4923, 4
  br i1 %4928, label %4957, label %4929

4929:                                             ; preds = %4925
  %4930 = and i64 %4923, 9223372036854775804
  br label %4931

4931:                                             ; preds = %4931, %4929
  %4932 = phi i64 [ 0, %4929 ], [ %4954, %4931 ]
  %4933 = phi <2 x double> [ splat (double 1.000000e+09), %4929 ], [ %4953, %4931 ]
  %4934 = phi i64 [ 0, %4929 ], [ %4955, %4931 ]
  %4935 = getelementptr inbounds nuw %struct.Piece, ptr %4926, i64 %4932, i32 35
  %4936 = load <2 x double>, ptr %4935, align 16, !tbaa !26
  %4937 = fcmp olt <2 x double> %4933, %4936
  %4938 = select <2 x i1> %4937, <2 x double> %4933, <2 x double> %4936
  %4939 = or disjoint i64 %4932, 1
  %4940 = getelementptr inbounds nuw %struct.Piece, ptr %4926, i64 %4939, i32 35
  %4941 = load <2 x double>, ptr %4940, align 16, !tbaa !26
  %4942 = fcmp olt <2 x double> %4938, %4941
  %4943 = select <2 x i1> %4942, <2 x double> %4938, <2 x double> %4941
  %4944 = or disjoint i64 %4932, 2
  %4945 = getelementptr inbounds nuw %struct.Piece, ptr %4926, i64 %4944, i32 35
  %4946 = load <2 x double>, ptr %4945, align 16, !tbaa !26
  %4947 = fcmp olt <2 x double> %4943, %4946
  %4948 = select <2 x i1> %4947, <2 x double> %4943, <2 x double> %4946
  %4949 = or disjoint i64 %4932, 3
  %4950 = getelementptr inbounds nuw %struct.Piece, ptr %4926, i64 %4949, i32 35
  %4951 = load <2 x double>, ptr %4950, align 16, !tbaa !26
  %4952 = fcmp olt <2 x double> %4948, %4951
  %4953 = select <2 x i1> %4952, <2 x double> %4948, <2 x double> %4951
  %4954 = add nuw nsw i64 %4932, 4
  %4955 = add i64 %4934, 4
  %4956 = icmp eq i64 %4955, %4930
  br i1 %4956, label %4957, label %4931, !llvm.loop !114

4957:                                             ; preds = %4931, %4925
  %4958 = phi <2 x double> [ poison, %4925 ], [ %4953, %4931 ]
  %4959 = phi i64 [ 0, %4925 ], [ %4954, %4931 ]
  %4960 = phi <2 x double> [ splat (double 1.000000e+09), %4925 ], [ %4953, %4931 ]
  %4961 = icmp eq i64 %4927, 0
  br i1 %4961, label %4973, label %4962

4962:                                             ; preds = %4957, %4962
  %4963 = phi i64 [ %4970, %4962 ], [ %4959, %4957 ]
  %4964 = phi <2 x double> [ %4969, %4962 ], [ %4960, %4957 ]
  %4965 = phi i64 [ %4971, %4962 ], [ 0, %4957 ]
  %4966 = getelementptr inbounds nuw %struct.Piece, ptr %4926, i64 %4963, i32 35
  %4967 = load <2 x double>, ptr %4966, align 16, !tbaa !26
  %4968 = fcmp olt <2 x double> %4964, %4967
  %4969 = select <2 x i1> %4968, <2 x double> %4964, <2 x double> %4967
  %4970 = add nuw nsw i64 %4963, 1
  %4971 = add i64 %4965, 1
  %4972 = icmp eq i64 %4971, %4927
  br i1 %4972, label %4973, label %4962, !llvm.loop !142

4973:                                             ; preds = %4957, %4962, %4915
  %4974 = phi <2 x double> [ splat (double 1.000000e+09), %4915 ], [ %4958, %4957 ], [ %4969, %4962 ]
  %4975 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4976 = select <2 x i1> %3698, <2 x double> %4975, <2 x double> %4974
  store <2 x double> %4976, ptr %221, align 16, !tbaa !26
  %4977 = load <2 x double>, ptr %222, align 16, !tbaa !26
  %4978 = fcmp une <2 x double> %4977, zeroinitializer
  %4979 = load <2 x double>, ptr %196, align 16, !tbaa !26
  %4980 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %4981 = fsub <2 x double> %4979, %4980
  %4982 = fcmp une <2 x double> %4977, splat (double 1.000000e+00)
  %4983 = load <2 x double>, ptr %157, align 16, !tbaa !26
  %4984 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %4985 = fsub <2 x double> %4983, %4984
  %4986 = select <2 x i1> %4982, <2 x double> splat (double -1.000000e+00), <2 x double> %4985
  %4987 = fcmp une <2 x double> %4977, splat (double 2.000000e+00)
  %4988 = fsub <2 x double> %4976, %4984
  %4989 = select <2 x i1> %4987, <2 x double> %4986, <2 x double> %4988
  %4990 = fcmp une <2 x double> %4977, splat (double 3.000000e+00)
  %4991 = fsub <2 x double> %4981, %4984
  %4992 = select <2 x i1> %4990, <2 x double> %4989, <2 x double> %4991
  %4993 = fcmp une <2 x double> %4977, splat (double 4.000000e+00)
  %4994 = fsub <2 x double> %4984, %4981
  %4995 = select <2 x i1> %4993, <2 x double> %4992, <2 x double> %4994
  %4996 = fcmp oge <2 x double> %4995, splat (double 0xBEB0C6F7A0B5ED8D)
  %4997 = select <2 x i1> %4996, <2 x i1> %4978, <2 x i1> zeroinitializer
  %4998 = select <2 x i1> %4997, <2 x i64> %3638, <2 x i64> zeroinitializer
  %4999 = xor <2 x i64> %4998, splat (i64 -1)
  %5000 = and <2 x i64> %4922, %4999
  %5001 = load <2 x double>, ptr %139, align 16, !tbaa !26
  %5002 = icmp ne <2 x i64> %5000, zeroinitializer
  %5003 = select <2 x i1> %4978, <2 x i1> %5002, <2 x i1> zeroinitializer
  %5004 = select <2 x i1> %5003, <2 x double> splat (double 2.000000e+00), <2 x double> %5001
  store <2 x double> %5004, ptr %139, align 16, !tbaa !26
  %5005 = or <2 x i64> %4998, %4922
  %5006 = load <2 x double>, ptr %226, align 16, !tbaa !26
  %5007 = fadd <2 x double> %5006, splat (double 1.000000e+00)
  %5008 = icmp eq <2 x i64> %5005, zeroinitializer
  %5009 = select <2 x i1> %5008, <2 x double> %5006, <2 x double> %5007
  store <2 x double> %5009, ptr %226, align 16, !tbaa !26
  %5010 = xor <2 x i64> %5005, %3638
  %5011 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %5012 = fcmp oeq <2 x double> %5011, zeroinitializer
  %5013 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %5014 = fcmp oeq <2 x double> %5013, zeroinitializer
  %5015 = select <2 x i1> %5014, <2 x i1> %5012, <2 x i1> zeroinitializer
  %5016 = select <2 x i1> %5015, <2 x i64> %5010, <2 x i64> zeroinitializer
  %5017 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %5018 = fmul <2 x double> %5017, splat (double 5.000000e-01)
  %5019 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %5020 = fadd <2 x double> %5019, %5018
  %5021 = fadd <2 x double> %5020, splat (double -4.000000e-03)
  %5022 = fcmp ult <2 x double> %4983, %5021
  %5023 = fsub <2 x double> %5019, %5018
  %5024 = fadd <2 x double> %5023, splat (double 4.000000e-03)
  %5025 = fcmp ole <2 x double> %4983, %5024
  %5026 = load <2 x i64>, ptr %156, align 16, !tbaa !26
  %5027 = select <2 x i1> %5025, <2 x i64> splat (i64 -1), <2 x i64> %5026
  %5028 = select <2 x i1> %5022, <2 x i64> %5027, <2 x i64> zeroinitializer
  %5029 = xor <2 x i64> %5028, %5026
  %5030 = and <2 x i64> %5029, %5016
  %5031 = and <2 x i64> %5028, %5016
  %5032 = xor <2 x i64> %5016, splat (i64 -1)
  %5033 = and <2 x i64> %5026, %5032
  %5034 = or disjoint <2 x i64> %5031, %5033
  store <2 x i64> %5034, ptr %156, align 16, !tbaa !26
  %5035 = load <2 x i64>, ptr %166, align 16, !tbaa !26
  %5036 = or <2 x i64> %5030, %5035
  store <2 x i64> %5036, ptr %166, align 16, !tbaa !26
  %5037 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5005)
  %5038 = icmp eq i64 %5037, 0
  br i1 %5038, label %5049, label %5039

5039:                                             ; preds = %4973
  %5040 = extractelement <2 x i64> %5005, i64 0
  %5041 = icmp eq i64 %5040, 0
  br i1 %5041, label %5043, label %5042

5042:                                             ; preds = %5039
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %5043

5043:                                             ; preds = %5042, %5039
  %5044 = extractelement <2 x i64> %5005, i64 1
  %5045 = icmp eq i64 %5044, 0
  br i1 %5045, label %5047, label %5046

5046:                                             ; preds = %5043
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1584) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %5047

5047:                                             ; preds = %5046, %5043
  %5048 = load <2 x double>, ptr %139, align 16, !tbaa !26
  br label %5049

5049:                                             ; preds = %5047, %4973
  %5050 = phi <2 x double> [ %5048, %5047 ], [ %5004, %4973 ]
  %5051 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %5052 = load <2 x double>, ptr %234, align 16, !tbaa !26
  %5053 = fadd <2 x double> %5052, splat (double -1.000000e+00)
  %5054 = fcmp oge <2 x double> %5051, %5053
  %5055 = select <2 x i1> %5054, <2 x i64> %3638, <2 x i64> zeroinitializer
  %5056 = icmp eq <2 x i64> %5055, zeroinitializer
  %5057 = select <2 x i1> %5056, <2 x double> %5050, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %5057, ptr %139, align 16, !tbaa !26
  %5058 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %5055)
  %5059 = icmp eq i64 %5058, 0
  br i1 %5059, label %527, label %5060

5060:                                             ; preds = %5049
  %5061 = extractelement <2 x i64> %5055, i64 0
  %5062 = icmp eq i64 %5061, 0
  br i1 %5062, label %5064, label %5063

5063:                                             ; preds = %5060
  store double 1.000000e+00, ptr %131, align 8, !tbaa !42
  br label %5064

5064:                                             ; preds = %5063, %5060
  %5065 = extractelement <2 x i64> %5055, i64 1
  %5066 = icmp eq i64 %5065, 0
  br i1 %5066, label %527, label %5067

5067:                                             ; preds = %5064
  store double 1.000000e+00, ptr %264, align 8, !tbaa !42
  br label %527

5068:                                             ; preds = %527, %532, %122
  %5069 = phi i64 [ 0, %122 ], [ 1, %532 ], [ 0, %527 ]
  ret i64 %5069
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
  %12 = load ptr, ptr %11, align 16, !tbaa !38
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
  %34 = load i64, ptr %33, align 8, !tbaa !131
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
  br i1 %45, label %36, label %31, !llvm.loop !132

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
  %71 = getelementptr inbounds nuw i8, ptr %70, i64 1904
  %72 = load ptr, ptr %71, align 16, !tbaa !46
  %73 = load i64, ptr %64, align 16, !tbaa !21
  %74 = getelementptr <2 x double>, ptr %72, i64 %73
  %75 = getelementptr i8, ptr %74, i64 -16
  %76 = load <2 x double>, ptr %75, align 16, !tbaa !26
  %77 = getelementptr inbounds nuw i8, ptr %70, i64 1712
  %78 = load <2 x double>, ptr %77, align 16, !tbaa !26
  %79 = getelementptr inbounds nuw i8, ptr %70, i64 1392
  %80 = load <2 x double>, ptr %79, align 16, !tbaa !26
  %81 = fsub <2 x double> %80, %76
  %82 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %78, <2 x double> %81, <2 x double> %76)
  %83 = getelementptr inbounds nuw i8, ptr %67, i64 16
  store <2 x double> %82, ptr %67, align 16, !tbaa !26
  %84 = getelementptr inbounds nuw i8, ptr %70, i64 1600
  %85 = load <2 x double>, ptr %84, align 16, !tbaa !26
  %86 = getelementptr inbounds nuw i8, ptr %67, i64 32
  store <2 x double> %85, ptr %83, align 16, !tbaa !26
  %87 = load <2 x double>, ptr %70, align 16, !tbaa !26
  %88 = getelementptr inbounds nuw i8, ptr %70, i64 928
  %89 = load <2 x double>, ptr %88, align 16, !tbaa !26
  %90 = fsub <2 x double> %87, %89
  %91 = getelementptr inbounds nuw i8, ptr %67, i64 48
  store <2 x double> %90, ptr %86, align 16, !tbaa !26
  %92 = getelementptr inbounds nuw i8, ptr %70, i64 1008
  %93 = load <2 x double>, ptr %92, align 16, !tbaa !26
  %94 = getelementptr inbounds nuw i8, ptr %67, i64 64
  store <2 x double> %93, ptr %91, align 16, !tbaa !26
  %95 = getelementptr inbounds nuw i8, ptr %70, i64 992
  %96 = load <2 x double>, ptr %95, align 16, !tbaa !26
  %97 = getelementptr inbounds nuw i8, ptr %67, i64 80
  store <2 x double> %96, ptr %94, align 16, !tbaa !26
  %98 = getelementptr inbounds nuw i8, ptr %70, i64 960
  %99 = load <2 x double>, ptr %98, align 16, !tbaa !26
  %100 = getelementptr inbounds nuw i8, ptr %67, i64 96
  store <2 x double> %99, ptr %97, align 16, !tbaa !26
  %101 = getelementptr inbounds nuw i8, ptr %70, i64 1024
  %102 = load <2 x double>, ptr %101, align 16, !tbaa !26
  %103 = getelementptr inbounds nuw i8, ptr %67, i64 112
  store <2 x double> %102, ptr %100, align 16, !tbaa !26
  %104 = getelementptr inbounds nuw i8, ptr %70, i64 2024
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
  %118 = load ptr, ptr %104, align 8, !tbaa !50
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
  %140 = load ptr, ptr %104, align 8, !tbaa !50
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
  %163 = load ptr, ptr %104, align 8, !tbaa !50
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
  br i1 %176, label %66, label %177, !llvm.loop !133

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
  %200 = load i64, ptr %179, align 8, !tbaa !134
  %201 = icmp eq i64 %199, %200
  br i1 %201, label %205, label %202

202:                                              ; preds = %197
  %203 = getelementptr inbounds nuw [2 x ptr], ptr %186, i64 0, i64 %194
  %204 = load ptr, ptr %203, align 8, !tbaa !135
  br label %219

205:                                              ; preds = %197
  %206 = getelementptr inbounds nuw [2 x i64], ptr %180, i64 0, i64 %194
  %207 = load i64, ptr %206, align 8, !tbaa !30
  %208 = load i64, ptr %183, align 8, !tbaa !41
  %209 = getelementptr inbounds i64, ptr %182, i64 %208
  store i64 %207, ptr %209, align 8, !tbaa !30
  %210 = load ptr, ptr %184, align 8, !tbaa !137
  %211 = load i64, ptr %183, align 8, !tbaa !41
  %212 = add nsw i64 %211, 1
  store i64 %212, ptr %183, align 8, !tbaa !41
  %213 = load i64, ptr %179, align 8, !tbaa !134
  %214 = mul nsw i64 %213, %211
  %215 = load i64, ptr %185, align 8, !tbaa !15
  %216 = mul nsw i64 %214, %215
  %217 = getelementptr inbounds double, ptr %210, i64 %216
  %218 = getelementptr inbounds nuw [2 x ptr], ptr %186, i64 0, i64 %194
  store ptr %217, ptr %218, align 8, !tbaa !135
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
  store double %241, ptr %237, align 8, !tbaa !42
  %242 = or disjoint i64 %236, 1
  %243 = getelementptr i8, ptr %237, i64 16
  %244 = getelementptr inbounds nuw <2 x double>, ptr %24, i64 %242, i64 %194
  %245 = load double, ptr %244, align 8
  store double %245, ptr %239, align 8, !tbaa !42
  %246 = or disjoint i64 %236, 2
  %247 = getelementptr i8, ptr %237, i64 24
  %248 = getelementptr inbounds nuw <2 x double>, ptr %24, i64 %246, i64 %194
  %249 = load double, ptr %248, align 8
  store double %249, ptr %243, align 8, !tbaa !42
  %250 = or disjoint i64 %236, 3
  %251 = getelementptr i8, ptr %237, i64 32
  %252 = getelementptr inbounds nuw <2 x double>, ptr %24, i64 %250, i64 %194
  %253 = load double, ptr %252, align 8
  store double %253, ptr %247, align 8, !tbaa !42
  %254 = add nuw nsw i64 %236, 4
  %255 = add i64 %238, 4
  %256 = icmp eq i64 %255, %234
  br i1 %256, label %257, label %235, !llvm.loop !138

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
  store double %268, ptr %264, align 8, !tbaa !42
  %269 = add nuw nsw i64 %263, 1
  %270 = add i64 %265, 1
  %271 = icmp eq i64 %270, %231
  br i1 %271, label %272, label %262, !llvm.loop !143

272:                                              ; preds = %257, %262, %226
  %273 = phi ptr [ %227, %226 ], [ %258, %257 ], [ %266, %262 ]
  %274 = load i64, ptr %33, align 8, !tbaa !131
  %275 = icmp eq i64 %274, 0
  br i1 %275, label %332, label %276

276:                                              ; preds = %272
  %277 = getelementptr inbounds nuw double, ptr %32, i64 %194
  %278 = load double, ptr %277, align 8, !tbaa !42
  %279 = getelementptr inbounds nuw i8, ptr %273, i64 8
  store double %278, ptr %273, align 8, !tbaa !42
  %280 = getelementptr inbounds nuw i8, ptr %277, i64 16
  %281 = load double, ptr %280, align 8, !tbaa !42
  %282 = getelementptr inbounds nuw i8, ptr %273, i64 16
  store double %281, ptr %279, align 8, !tbaa !42
  %283 = getelementptr inbounds nuw i8, ptr %277, i64 32
  %284 = load double, ptr %283, align 8, !tbaa !42
  store double %284, ptr %282, align 8, !tbaa !42
  br i1 %229, label %293, label %332

285:                                              ; preds = %219, %285
  %286 = phi ptr [ %291, %285 ], [ %187, %219 ]
  %287 = phi ptr [ %290, %285 ], [ %225, %219 ]
  %288 = getelementptr inbounds nuw double, ptr %286, i64 %194
  %289 = load double, ptr %288, align 8, !tbaa !42
  %290 = getelementptr inbounds nuw i8, ptr %287, i64 8
  store double %289, ptr %287, align 8, !tbaa !42
  %291 = getelementptr inbounds nuw i8, ptr %286, i64 16
  %292 = icmp ult ptr %291, %24
  br i1 %292, label %285, label %226, !llvm.loop !140

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
  store double %301, ptr %297, align 8, !tbaa !42
  %303 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 1, i64 %194
  %304 = load double, ptr %303, align 8
  %305 = getelementptr inbounds nuw i8, ptr %297, i64 16
  store double %304, ptr %302, align 8, !tbaa !42
  %306 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 2, i64 %194
  %307 = load double, ptr %306, align 8
  %308 = getelementptr inbounds nuw i8, ptr %297, i64 24
  store double %307, ptr %305, align 8, !tbaa !42
  %309 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 3, i64 %194
  %310 = load double, ptr %309, align 8
  %311 = getelementptr inbounds nuw i8, ptr %297, i64 32
  store double %310, ptr %308, align 8, !tbaa !42
  %312 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 4, i64 %194
  %313 = load double, ptr %312, align 8
  %314 = getelementptr inbounds nuw i8, ptr %297, i64 40
  store double %313, ptr %311, align 8, !tbaa !42
  %315 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 5, i64 %194
  %316 = load double, ptr %315, align 8
  %317 = getelementptr inbounds nuw i8, ptr %297, i64 48
  store double %316, ptr %314, align 8, !tbaa !42
  %318 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 6, i64 %194
  %319 = load double, ptr %318, align 8
  %320 = getelementptr inbounds nuw i8, ptr %297, i64 56
  store double %319, ptr %317, align 8, !tbaa !42
  %321 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 7, i64 %194
  %322 = load double, ptr %321, align 8
  %323 = getelementptr inbounds nuw i8, ptr %297, i64 64
  store double %322, ptr %320, align 8, !tbaa !42
  %324 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 8, i64 %194
  %325 = load double, ptr %324, align 8
  %326 = getelementptr inbounds nuw i8, ptr %297, i64 72
  store double %325, ptr %323, align 8, !tbaa !42
  %327 = getelementptr inbounds nuw <2 x double>, ptr %299, i64 9, i64 %194
  %328 = load double, ptr %327, align 8
  %329 = getelementptr inbounds nuw i8, ptr %297, i64 80
  store double %328, ptr %326, align 8, !tbaa !42
  %330 = add nuw nsw i64 %296, 1
  %331 = icmp eq i64 %330, %228
  br i1 %331, label %332, label %295, !llvm.loop !138

332:                                              ; preds = %295, %276, %272, %191
  br i1 %192, label %191, label %333, !llvm.loop !141

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
  %9 = load i64, ptr %8, align 8, !tbaa !134
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
  store double 0.000000e+00, ptr %20, align 8, !tbaa !42
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %22 = load ptr, ptr %21, align 8, !tbaa !144
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
  %37 = load ptr, ptr %36, align 8, !tbaa !145
  %38 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %39 = load ptr, ptr %38, align 8, !tbaa !146
  %40 = getelementptr inbounds nuw i8, ptr %1, i64 104
  %41 = load ptr, ptr %40, align 8, !tbaa !147
  br label %160

42:                                               ; preds = %42, %4
  %43 = phi i64 [ 0, %4 ], [ %59, %42 ]
  %44 = getelementptr double, ptr %24, i64 %43
  %45 = load double, ptr %44, align 8, !tbaa !42
  %46 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %43
  store double %45, ptr %46, align 8, !tbaa !42
  %47 = or disjoint i64 %43, 1
  %48 = getelementptr double, ptr %24, i64 %47
  %49 = load double, ptr %48, align 8, !tbaa !42
  %50 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %47
  store double %49, ptr %50, align 8, !tbaa !42
  %51 = or disjoint i64 %43, 2
  %52 = getelementptr double, ptr %24, i64 %51
  %53 = load double, ptr %52, align 8, !tbaa !42
  %54 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %51
  store double %53, ptr %54, align 8, !tbaa !42
  %55 = or disjoint i64 %43, 3
  %56 = getelementptr double, ptr %24, i64 %55
  %57 = load double, ptr %56, align 8, !tbaa !42
  %58 = getelementptr inbounds nuw <2 x double>, ptr %25, i64 %55
  store double %57, ptr %58, align 8, !tbaa !42
  %59 = add nuw nsw i64 %43, 4
  %60 = icmp eq i64 %59, 36
  br i1 %60, label %26, label %42, !llvm.loop !148

61:                                               ; preds = %539, %26
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
  store double 0.000000e+00, ptr %72, align 8, !tbaa !42
  %73 = getelementptr inbounds nuw i8, ptr %71, i64 80
  store double 0.000000e+00, ptr %73, align 8, !tbaa !42
  %74 = load double, ptr %66, align 8, !tbaa !42
  store double %74, ptr %71, align 8, !tbaa !42
  %75 = load double, ptr %68, align 8, !tbaa !42
  %76 = getelementptr inbounds nuw i8, ptr %0, i64 688
  %77 = getelementptr inbounds nuw double, ptr %76, i64 %6
  store double %75, ptr %77, align 8, !tbaa !42
  %78 = load double, ptr %70, align 8, !tbaa !42
  %79 = getelementptr inbounds nuw i8, ptr %0, i64 672
  %80 = getelementptr inbounds nuw double, ptr %79, i64 %6
  store double %78, ptr %80, align 8, !tbaa !42
  %81 = getelementptr inbounds nuw i8, ptr %0, i64 656
  %82 = getelementptr inbounds nuw double, ptr %81, i64 %6
  store double %78, ptr %82, align 8, !tbaa !42
  %83 = getelementptr inbounds nuw double, ptr %63, i64 %6
  %84 = getelementptr inbounds nuw i8, ptr %83, i64 64
  store double 0.000000e+00, ptr %84, align 8, !tbaa !42
  %85 = getelementptr inbounds nuw i8, ptr %83, i64 80
  store double 0.000000e+00, ptr %85, align 8, !tbaa !42
  store double %74, ptr %83, align 8, !tbaa !42
  %86 = getelementptr inbounds nuw i8, ptr %0, i64 784
  %87 = getelementptr inbounds nuw double, ptr %86, i64 %6
  store double %75, ptr %87, align 8, !tbaa !42
  %88 = getelementptr inbounds nuw i8, ptr %0, i64 768
  %89 = getelementptr inbounds nuw double, ptr %88, i64 %6
  store double %78, ptr %89, align 8, !tbaa !42
  %90 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %91 = getelementptr inbounds nuw double, ptr %90, i64 %6
  store double %78, ptr %91, align 8, !tbaa !42
  %92 = getelementptr inbounds nuw double, ptr %64, i64 %6
  %93 = getelementptr inbounds nuw i8, ptr %92, i64 64
  store double 0.000000e+00, ptr %93, align 8, !tbaa !42
  %94 = getelementptr inbounds nuw i8, ptr %92, i64 80
  store double 0.000000e+00, ptr %94, align 8, !tbaa !42
  store double %74, ptr %92, align 8, !tbaa !42
  %95 = getelementptr inbounds nuw i8, ptr %0, i64 880
  %96 = getelementptr inbounds nuw double, ptr %95, i64 %6
  store double %75, ptr %96, align 8, !tbaa !42
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 864
  %98 = getelementptr inbounds nuw double, ptr %97, i64 %6
  store double %78, ptr %98, align 8, !tbaa !42
  %99 = getelementptr inbounds nuw i8, ptr %0, i64 848
  %100 = getelementptr inbounds nuw double, ptr %99, i64 %6
  store double %78, ptr %100, align 8, !tbaa !42
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %102 = getelementptr inbounds nuw double, ptr %101, i64 %6
  %103 = load double, ptr %102, align 8, !tbaa !42
  %104 = getelementptr inbounds nuw i8, ptr %0, i64 1008
  %105 = getelementptr inbounds nuw double, ptr %104, i64 %6
  store double %103, ptr %105, align 8, !tbaa !42
  %106 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %107 = getelementptr inbounds nuw double, ptr %106, i64 %6
  store double %103, ptr %107, align 8, !tbaa !42
  %108 = getelementptr inbounds nuw i8, ptr %0, i64 1168
  %109 = getelementptr inbounds nuw double, ptr %108, i64 %6
  store double 1.000000e+09, ptr %109, align 8, !tbaa !42
  %110 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %111 = getelementptr inbounds nuw double, ptr %110, i64 %6
  store double 0.000000e+00, ptr %111, align 8, !tbaa !42
  %112 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %113 = getelementptr inbounds nuw double, ptr %112, i64 %6
  %114 = load double, ptr %113, align 8, !tbaa !42
  %115 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %116 = getelementptr inbounds nuw double, ptr %115, i64 %6
  store double %114, ptr %116, align 8, !tbaa !42
  %117 = getelementptr inbounds nuw i8, ptr %0, i64 1184
  %118 = getelementptr inbounds nuw double, ptr %117, i64 %6
  store double %114, ptr %118, align 8, !tbaa !42
  %119 = getelementptr inbounds nuw i8, ptr %0, i64 560
  %120 = getelementptr inbounds nuw double, ptr %119, i64 %6
  %121 = load double, ptr %120, align 8, !tbaa !42
  %122 = getelementptr inbounds nuw i8, ptr %0, i64 1296
  %123 = getelementptr inbounds nuw double, ptr %122, i64 %6
  store double %121, ptr %123, align 8, !tbaa !42
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
  store double 0.000000e+00, ptr %137, align 8, !tbaa !42
  %138 = getelementptr inbounds nuw double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !42
  %139 = getelementptr inbounds nuw double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !42
  %140 = getelementptr inbounds nuw double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !42
  %141 = getelementptr inbounds nuw double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !42
  %142 = getelementptr inbounds nuw double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !42
  %143 = getelementptr inbounds nuw double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !42
  %144 = getelementptr inbounds nuw double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !42
  %145 = getelementptr inbounds nuw double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !42
  %146 = getelementptr inbounds nuw double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %146, align 8, !tbaa !42
  %147 = getelementptr inbounds nuw double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %147, align 8, !tbaa !42
  %148 = getelementptr inbounds nuw double, ptr %135, i64 %6
  store double 0.000000e+00, ptr %148, align 8, !tbaa !42
  %149 = getelementptr inbounds nuw double, ptr %136, i64 %6
  store double 0.000000e+00, ptr %149, align 8, !tbaa !42
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

160:                                              ; preds = %30, %539
  %161 = phi i64 [ 0, %30 ], [ %540, %539 ]
  %162 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %161
  %163 = load i64, ptr %33, align 16, !tbaa !21
  %164 = load i64, ptr %34, align 8, !tbaa !22
  %165 = load i64, ptr %35, align 16, !tbaa !16
  %166 = mul nsw i64 %165, %3
  %167 = add nsw i64 %166, %161
  %168 = getelementptr inbounds nuw i8, ptr %162, i64 1888
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
  %186 = getelementptr inbounds nuw i8, ptr %162, i64 1984
  %187 = load ptr, ptr %186, align 16, !tbaa !67
  %188 = getelementptr inbounds nuw double, ptr %187, i64 %6
  %189 = getelementptr double, ptr %183, i64 %163
  %190 = getelementptr inbounds nuw i8, ptr %162, i64 1992
  %191 = load ptr, ptr %190, align 8, !tbaa !48
  %192 = getelementptr inbounds nuw double, ptr %191, i64 %6
  %193 = shl i64 %163, 4
  %194 = getelementptr i8, ptr %183, i64 %193
  %195 = getelementptr inbounds nuw i8, ptr %162, i64 2000
  %196 = load ptr, ptr %195, align 16, !tbaa !118
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
  %205 = load double, ptr %204, align 8, !tbaa !42
  %206 = getelementptr inbounds nuw <2 x double>, ptr %172, i64 %203
  store double %205, ptr %206, align 8, !tbaa !42
  %207 = or disjoint i64 %203, 1
  %208 = getelementptr double, ptr %171, i64 %207
  %209 = load double, ptr %208, align 8, !tbaa !42
  %210 = getelementptr inbounds nuw <2 x double>, ptr %172, i64 %207
  store double %209, ptr %210, align 8, !tbaa !42
  %211 = add nuw nsw i64 %203, 2
  %212 = icmp eq i64 %211, 46
  br i1 %212, label %173, label %202, !llvm.loop !149

213:                                              ; preds = %241, %185
  %214 = phi i64 [ 0, %185 ], [ %263, %241 ]
  %215 = icmp eq i64 %198, 0
  br i1 %215, label %226, label %216

216:                                              ; preds = %213
  %217 = getelementptr inbounds nuw double, ptr %183, i64 %214
  %218 = load double, ptr %217, align 8, !tbaa !42
  %219 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %214
  store double %218, ptr %219, align 8, !tbaa !42
  %220 = getelementptr double, ptr %189, i64 %214
  %221 = load double, ptr %220, align 8, !tbaa !42
  %222 = getelementptr inbounds nuw <2 x double>, ptr %192, i64 %214
  store double %221, ptr %222, align 8, !tbaa !42
  %223 = getelementptr double, ptr %194, i64 %214
  %224 = load double, ptr %223, align 8, !tbaa !42
  %225 = getelementptr inbounds nuw <2 x double>, ptr %197, i64 %214
  store double %224, ptr %225, align 8, !tbaa !42
  br label %226

226:                                              ; preds = %216, %213, %173
  %227 = getelementptr inbounds nuw i8, ptr %162, i64 240
  %228 = getelementptr inbounds nuw double, ptr %227, i64 %6
  %229 = load double, ptr %228, align 8, !tbaa !42
  %230 = load double, ptr %172, align 8, !tbaa !42
  %231 = icmp sgt i64 %180, 0
  br i1 %231, label %232, label %278

232:                                              ; preds = %226
  %233 = getelementptr double, ptr %183, i64 %177
  %234 = getelementptr inbounds nuw i8, ptr %162, i64 2008
  %235 = load ptr, ptr %234, align 8, !tbaa !35
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
  %245 = load double, ptr %244, align 8, !tbaa !42
  %246 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %242
  store double %245, ptr %246, align 8, !tbaa !42
  %247 = getelementptr double, ptr %189, i64 %242
  %248 = load double, ptr %247, align 8, !tbaa !42
  %249 = getelementptr inbounds nuw <2 x double>, ptr %192, i64 %242
  store double %248, ptr %249, align 8, !tbaa !42
  %250 = getelementptr double, ptr %194, i64 %242
  %251 = load double, ptr %250, align 8, !tbaa !42
  %252 = getelementptr inbounds nuw <2 x double>, ptr %197, i64 %242
  store double %251, ptr %252, align 8, !tbaa !42
  %253 = or disjoint i64 %242, 1
  %254 = getelementptr inbounds nuw double, ptr %183, i64 %253
  %255 = load double, ptr %254, align 8, !tbaa !42
  %256 = getelementptr inbounds nuw <2 x double>, ptr %188, i64 %253
  store double %255, ptr %256, align 8, !tbaa !42
  %257 = getelementptr double, ptr %189, i64 %253
  %258 = load double, ptr %257, align 8, !tbaa !42
  %259 = getelementptr inbounds nuw <2 x double>, ptr %192, i64 %253
  store double %258, ptr %259, align 8, !tbaa !42
  %260 = getelementptr double, ptr %194, i64 %253
  %261 = load double, ptr %260, align 8, !tbaa !42
  %262 = getelementptr inbounds nuw <2 x double>, ptr %197, i64 %253
  store double %261, ptr %262, align 8, !tbaa !42
  %263 = add nuw nsw i64 %242, 2
  %264 = add i64 %243, 2
  %265 = icmp eq i64 %264, %201
  br i1 %265, label %213, label %241, !llvm.loop !150

266:                                              ; preds = %287, %232
  %267 = phi i64 [ 0, %232 ], [ %305, %287 ]
  %268 = icmp eq i64 %237, 0
  br i1 %268, label %278, label %269

269:                                              ; preds = %266, %269
  %270 = phi i64 [ %275, %269 ], [ %267, %266 ]
  %271 = phi i64 [ %276, %269 ], [ 0, %266 ]
  %272 = getelementptr double, ptr %233, i64 %270
  %273 = load double, ptr %272, align 8, !tbaa !42
  %274 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %270
  store double %273, ptr %274, align 8, !tbaa !42
  %275 = add nuw nsw i64 %270, 1
  %276 = add i64 %271, 1
  %277 = icmp eq i64 %276, %237
  br i1 %277, label %278, label %269, !llvm.loop !151

278:                                              ; preds = %266, %269, %226
  %279 = icmp ne i64 %169, 0
  %280 = icmp sgt i64 %163, -1
  %281 = select i1 %279, i1 %280, i1 false
  br i1 %281, label %282, label %308

282:                                              ; preds = %278
  %283 = fdiv double 1.000000e+00, %230
  %284 = getelementptr inbounds nuw i8, ptr %162, i64 2008
  %285 = load ptr, ptr %284, align 8, !tbaa !35
  %286 = getelementptr inbounds nuw double, ptr %285, i64 %6
  br label %427

287:                                              ; preds = %287, %239
  %288 = phi i64 [ 0, %239 ], [ %305, %287 ]
  %289 = phi i64 [ 0, %239 ], [ %306, %287 ]
  %290 = getelementptr double, ptr %233, i64 %288
  %291 = load double, ptr %290, align 8, !tbaa !42
  %292 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %288
  store double %291, ptr %292, align 8, !tbaa !42
  %293 = or disjoint i64 %288, 1
  %294 = getelementptr double, ptr %233, i64 %293
  %295 = load double, ptr %294, align 8, !tbaa !42
  %296 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %293
  store double %295, ptr %296, align 8, !tbaa !42
  %297 = or disjoint i64 %288, 2
  %298 = getelementptr double, ptr %233, i64 %297
  %299 = load double, ptr %298, align 8, !tbaa !42
  %300 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %297
  store double %299, ptr %300, align 8, !tbaa !42
  %301 = or disjoint i64 %288, 3
  %302 = getelementptr double, ptr %233, i64 %301
  %303 = load double, ptr %302, align 8, !tbaa !42
  %304 = getelementptr inbounds nuw <2 x double>, ptr %236, i64 %301
  store double %303, ptr %304, align 8, !tbaa !42
  %305 = add nuw nsw i64 %288, 4
  %306 = add i64 %289, 4
  %307 = icmp eq i64 %306, %240
  br i1 %307, label %266, label %287, !llvm.loop !152

308:                                              ; preds = %427, %278
  %309 = getelementptr inbounds nuw i8, ptr %162, i64 640
  %310 = getelementptr inbounds nuw double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !42
  %312 = getelementptr inbounds nuw i8, ptr %162, i64 656
  %313 = getelementptr inbounds nuw double, ptr %312, i64 %6
  %314 = load double, ptr %313, align 8, !tbaa !42
  %315 = getelementptr inbounds nuw i8, ptr %162, i64 672
  %316 = getelementptr inbounds nuw double, ptr %315, i64 %6
  %317 = load double, ptr %316, align 8, !tbaa !42
  %318 = getelementptr inbounds nuw i8, ptr %162, i64 688
  %319 = getelementptr inbounds nuw double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !42
  %321 = tail call double @llvm.fmuladd.f64(double %230, double %320, double %317)
  %322 = tail call double @llvm.fmuladd.f64(double %230, double %321, double %314)
  %323 = tail call double @llvm.fmuladd.f64(double %230, double %322, double %311)
  %324 = getelementptr inbounds nuw i8, ptr %162, i64 208
  %325 = getelementptr inbounds nuw double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !42
  %327 = getelementptr inbounds nuw i8, ptr %162, i64 352
  %328 = getelementptr inbounds nuw double, ptr %327, i64 %6
  %329 = load double, ptr %328, align 8, !tbaa !42
  %330 = getelementptr inbounds nuw i8, ptr %162, i64 384
  %331 = getelementptr inbounds nuw double, ptr %330, i64 %6
  %332 = load double, ptr %331, align 8, !tbaa !42
  %333 = fsub double %329, %332
  %334 = fmul double %326, %333
  %335 = getelementptr inbounds nuw i8, ptr %162, i64 736
  %336 = getelementptr inbounds nuw i8, ptr %162, i64 928
  %337 = getelementptr inbounds nuw i8, ptr %162, i64 1120
  %338 = getelementptr inbounds nuw i8, ptr %162, i64 224
  %339 = getelementptr inbounds nuw double, ptr %338, i64 %6
  %340 = getelementptr inbounds nuw i8, ptr %162, i64 256
  %341 = getelementptr inbounds nuw double, ptr %340, i64 %6
  %342 = getelementptr inbounds nuw double, ptr %335, i64 %6
  %343 = getelementptr inbounds nuw i8, ptr %342, i64 80
  store double 0.000000e+00, ptr %343, align 8, !tbaa !42
  %344 = getelementptr inbounds nuw i8, ptr %342, i64 96
  store double 0.000000e+00, ptr %344, align 8, !tbaa !42
  %345 = getelementptr inbounds nuw i8, ptr %342, i64 112
  store double 0.000000e+00, ptr %345, align 8, !tbaa !42
  %346 = getelementptr inbounds nuw i8, ptr %342, i64 128
  store double 0.000000e+00, ptr %346, align 8, !tbaa !42
  %347 = getelementptr inbounds nuw i8, ptr %342, i64 160
  store double 0.000000e+00, ptr %347, align 8, !tbaa !42
  store double %230, ptr %342, align 8, !tbaa !42
  %348 = getelementptr inbounds nuw i8, ptr %162, i64 752
  %349 = getelementptr inbounds nuw double, ptr %348, i64 %6
  store double %329, ptr %349, align 8, !tbaa !42
  %350 = load double, ptr %339, align 8, !tbaa !42
  %351 = getelementptr inbounds nuw i8, ptr %162, i64 768
  %352 = getelementptr inbounds nuw double, ptr %351, i64 %6
  store double %350, ptr %352, align 8, !tbaa !42
  %353 = getelementptr inbounds nuw i8, ptr %162, i64 784
  %354 = getelementptr inbounds nuw double, ptr %353, i64 %6
  store double %334, ptr %354, align 8, !tbaa !42
  %355 = getelementptr inbounds nuw i8, ptr %162, i64 880
  %356 = getelementptr inbounds nuw double, ptr %355, i64 %6
  store double %229, ptr %356, align 8, !tbaa !42
  %357 = load double, ptr %341, align 8, !tbaa !42
  %358 = getelementptr inbounds nuw i8, ptr %162, i64 800
  %359 = getelementptr inbounds nuw double, ptr %358, i64 %6
  store double %357, ptr %359, align 8, !tbaa !42
  %360 = getelementptr inbounds nuw i8, ptr %162, i64 912
  %361 = getelementptr inbounds nuw double, ptr %360, i64 %6
  store double %323, ptr %361, align 8, !tbaa !42
  %362 = getelementptr inbounds nuw double, ptr %336, i64 %6
  %363 = getelementptr inbounds nuw i8, ptr %362, i64 80
  store double 0.000000e+00, ptr %363, align 8, !tbaa !42
  %364 = getelementptr inbounds nuw i8, ptr %362, i64 96
  store double 0.000000e+00, ptr %364, align 8, !tbaa !42
  %365 = getelementptr inbounds nuw i8, ptr %362, i64 112
  store double 0.000000e+00, ptr %365, align 8, !tbaa !42
  %366 = getelementptr inbounds nuw i8, ptr %362, i64 128
  store double 0.000000e+00, ptr %366, align 8, !tbaa !42
  %367 = getelementptr inbounds nuw i8, ptr %362, i64 160
  store double 0.000000e+00, ptr %367, align 8, !tbaa !42
  store double %230, ptr %362, align 8, !tbaa !42
  %368 = getelementptr inbounds nuw i8, ptr %162, i64 944
  %369 = getelementptr inbounds nuw double, ptr %368, i64 %6
  store double %329, ptr %369, align 8, !tbaa !42
  %370 = getelementptr inbounds nuw i8, ptr %162, i64 960
  %371 = getelementptr inbounds nuw double, ptr %370, i64 %6
  store double %350, ptr %371, align 8, !tbaa !42
  %372 = getelementptr inbounds nuw i8, ptr %162, i64 976
  %373 = getelementptr inbounds nuw double, ptr %372, i64 %6
  store double %334, ptr %373, align 8, !tbaa !42
  %374 = getelementptr inbounds nuw i8, ptr %162, i64 1072
  %375 = getelementptr inbounds nuw double, ptr %374, i64 %6
  store double %229, ptr %375, align 8, !tbaa !42
  %376 = getelementptr inbounds nuw i8, ptr %162, i64 992
  %377 = getelementptr inbounds nuw double, ptr %376, i64 %6
  store double %357, ptr %377, align 8, !tbaa !42
  %378 = getelementptr inbounds nuw i8, ptr %162, i64 1104
  %379 = getelementptr inbounds nuw double, ptr %378, i64 %6
  store double %323, ptr %379, align 8, !tbaa !42
  %380 = getelementptr inbounds nuw double, ptr %337, i64 %6
  %381 = getelementptr inbounds nuw i8, ptr %380, i64 80
  store double 0.000000e+00, ptr %381, align 8, !tbaa !42
  %382 = getelementptr inbounds nuw i8, ptr %380, i64 96
  store double 0.000000e+00, ptr %382, align 8, !tbaa !42
  %383 = getelementptr inbounds nuw i8, ptr %380, i64 112
  store double 0.000000e+00, ptr %383, align 8, !tbaa !42
  %384 = getelementptr inbounds nuw i8, ptr %380, i64 128
  store double 0.000000e+00, ptr %384, align 8, !tbaa !42
  %385 = getelementptr inbounds nuw i8, ptr %380, i64 160
  store double 0.000000e+00, ptr %385, align 8, !tbaa !42
  store double %230, ptr %380, align 8, !tbaa !42
  %386 = load double, ptr %328, align 8, !tbaa !42
  %387 = getelementptr inbounds nuw i8, ptr %162, i64 1136
  %388 = getelementptr inbounds nuw double, ptr %387, i64 %6
  store double %386, ptr %388, align 8, !tbaa !42
  %389 = getelementptr inbounds nuw i8, ptr %162, i64 1152
  %390 = getelementptr inbounds nuw double, ptr %389, i64 %6
  store double %350, ptr %390, align 8, !tbaa !42
  %391 = getelementptr inbounds nuw i8, ptr %162, i64 1168
  %392 = getelementptr inbounds nuw double, ptr %391, i64 %6
  store double %334, ptr %392, align 8, !tbaa !42
  %393 = getelementptr inbounds nuw i8, ptr %162, i64 1264
  %394 = getelementptr inbounds nuw double, ptr %393, i64 %6
  store double %229, ptr %394, align 8, !tbaa !42
  %395 = getelementptr inbounds nuw i8, ptr %162, i64 1184
  %396 = getelementptr inbounds nuw double, ptr %395, i64 %6
  store double %357, ptr %396, align 8, !tbaa !42
  %397 = getelementptr inbounds nuw i8, ptr %162, i64 1296
  %398 = getelementptr inbounds nuw double, ptr %397, i64 %6
  store double %323, ptr %398, align 8, !tbaa !42
  %399 = load double, ptr %339, align 8, !tbaa !42
  %400 = fadd double %334, %399
  %401 = getelementptr inbounds nuw i8, ptr %162, i64 400
  %402 = getelementptr inbounds nuw double, ptr %401, i64 %6
  store double %400, ptr %402, align 8, !tbaa !42
  %403 = getelementptr inbounds nuw i8, ptr %162, i64 1392
  %404 = getelementptr inbounds nuw i8, ptr %162, i64 1600
  %405 = getelementptr inbounds nuw i8, ptr %162, i64 1616
  %406 = getelementptr inbounds nuw i8, ptr %162, i64 1808
  %407 = getelementptr inbounds nuw double, ptr %403, i64 %6
  store double %229, ptr %407, align 8, !tbaa !42
  %408 = getelementptr inbounds nuw double, ptr %404, i64 %6
  store double %229, ptr %408, align 8, !tbaa !42
  %409 = getelementptr inbounds nuw double, ptr %405, i64 %6
  store double %229, ptr %409, align 8, !tbaa !42
  %410 = getelementptr inbounds nuw double, ptr %406, i64 %6
  store double %229, ptr %410, align 8, !tbaa !42
  %411 = getelementptr inbounds nuw i8, ptr %162, i64 1408
  %412 = getelementptr inbounds nuw i8, ptr %162, i64 1424
  %413 = getelementptr inbounds nuw i8, ptr %162, i64 1824
  %414 = getelementptr inbounds nuw i8, ptr %162, i64 1792
  %415 = getelementptr inbounds nuw i8, ptr %162, i64 1712
  %416 = getelementptr inbounds nuw double, ptr %411, i64 %6
  store double 0.000000e+00, ptr %416, align 8, !tbaa !42
  %417 = getelementptr inbounds nuw double, ptr %412, i64 %6
  store double 0.000000e+00, ptr %417, align 8, !tbaa !42
  %418 = getelementptr inbounds nuw double, ptr %413, i64 %6
  store double 0.000000e+00, ptr %418, align 8, !tbaa !42
  %419 = getelementptr inbounds nuw double, ptr %414, i64 %6
  store double 0.000000e+00, ptr %419, align 8, !tbaa !42
  %420 = getelementptr inbounds nuw double, ptr %415, i64 %6
  store double 0.000000e+00, ptr %420, align 8, !tbaa !42
  %421 = getelementptr inbounds nuw i8, ptr %162, i64 1840
  %422 = getelementptr inbounds nuw i64, ptr %421, i64 %6
  store i64 0, ptr %422, align 8, !tbaa !30
  %423 = getelementptr inbounds nuw i8, ptr %162, i64 1856
  %424 = getelementptr inbounds nuw i64, ptr %423, i64 %6
  store i64 -1, ptr %424, align 8, !tbaa !30
  %425 = getelementptr inbounds nuw i8, ptr %162, i64 1872
  %426 = getelementptr inbounds nuw i64, ptr %425, i64 %6
  store i64 0, ptr %426, align 8, !tbaa !30
  br i1 %184, label %449, label %465

427:                                              ; preds = %282, %427
  %428 = phi i64 [ 0, %282 ], [ %447, %427 ]
  %429 = icmp slt i64 %428, %169
  %430 = select i1 %429, double %283, double 1.000000e+00
  %431 = shl nsw i64 %428, 6
  %432 = getelementptr inbounds nuw i8, ptr %286, i64 %431
  %433 = load double, ptr %432, align 8, !tbaa !42
  %434 = fmul double %430, %433
  store double %434, ptr %432, align 8, !tbaa !42
  %435 = fdiv double %430, %230
  %436 = getelementptr inbounds nuw i8, ptr %432, i64 16
  %437 = load double, ptr %436, align 8, !tbaa !42
  %438 = fmul double %435, %437
  store double %438, ptr %436, align 8, !tbaa !42
  %439 = fdiv double %435, %230
  %440 = getelementptr inbounds nuw i8, ptr %432, i64 32
  %441 = load double, ptr %440, align 8, !tbaa !42
  %442 = fmul double %439, %441
  store double %442, ptr %440, align 8, !tbaa !42
  %443 = fdiv double %439, %230
  %444 = getelementptr inbounds nuw i8, ptr %432, i64 48
  %445 = load double, ptr %444, align 8, !tbaa !42
  %446 = fmul double %443, %445
  store double %446, ptr %444, align 8, !tbaa !42
  %447 = add nuw nsw i64 %428, 1
  %448 = icmp slt i64 %428, %163
  br i1 %448, label %427, label %308, !llvm.loop !153

449:                                              ; preds = %308
  %450 = getelementptr inbounds nuw i8, ptr %162, i64 1912
  %451 = load ptr, ptr %450, align 8, !tbaa !56
  %452 = getelementptr inbounds nuw double, ptr %451, i64 %6
  %453 = getelementptr inbounds nuw i8, ptr %162, i64 1904
  %454 = load ptr, ptr %453, align 16, !tbaa !46
  %455 = getelementptr inbounds nuw double, ptr %454, i64 %6
  %456 = getelementptr inbounds nuw i8, ptr %162, i64 1896
  %457 = load ptr, ptr %456, align 8, !tbaa !57
  %458 = getelementptr inbounds nuw double, ptr %457, i64 %6
  %459 = getelementptr inbounds nuw i8, ptr %162, i64 1936
  %460 = load ptr, ptr %459, align 16, !tbaa !47
  %461 = getelementptr inbounds nuw double, ptr %460, i64 %6
  %462 = getelementptr inbounds nuw i8, ptr %162, i64 1928
  %463 = load ptr, ptr %462, align 8, !tbaa !64
  %464 = getelementptr inbounds nuw double, ptr %463, i64 %6
  br label %478

465:                                              ; preds = %478, %308
  %466 = icmp slt i64 %164, 0
  br i1 %466, label %539, label %467

467:                                              ; preds = %465
  %468 = getelementptr inbounds nuw i8, ptr %162, i64 2080
  %469 = load ptr, ptr %468, align 16, !tbaa !59
  %470 = getelementptr inbounds nuw double, ptr %469, i64 %6
  %471 = getelementptr inbounds nuw i8, ptr %162, i64 2072
  %472 = load ptr, ptr %471, align 8, !tbaa !49
  %473 = getelementptr inbounds nuw double, ptr %472, i64 %6
  %474 = icmp eq i64 %164, 0
  br i1 %474, label %487, label %475

475:                                              ; preds = %467
  %476 = add nuw i64 %164, 1
  %477 = and i64 %476, -2
  br label %512

478:                                              ; preds = %449, %478
  %479 = phi i64 [ 0, %449 ], [ %485, %478 ]
  %480 = getelementptr inbounds nuw <2 x double>, ptr %452, i64 %479
  store double %229, ptr %480, align 8, !tbaa !42
  %481 = getelementptr inbounds nuw <2 x double>, ptr %455, i64 %479
  store double %229, ptr %481, align 8, !tbaa !42
  %482 = getelementptr inbounds nuw <2 x double>, ptr %458, i64 %479
  store double %229, ptr %482, align 8, !tbaa !42
  %483 = getelementptr inbounds nuw <2 x double>, ptr %461, i64 %479
  store double 1.000000e+00, ptr %483, align 8, !tbaa !42
  %484 = getelementptr inbounds nuw <2 x double>, ptr %464, i64 %479
  store double 1.000000e+00, ptr %484, align 8, !tbaa !42
  %485 = add nuw nsw i64 %479, 1
  %486 = icmp eq i64 %485, %163
  br i1 %486, label %465, label %478, !llvm.loop !154

487:                                              ; preds = %526, %467
  %488 = phi i64 [ 0, %467 ], [ %530, %526 ]
  %489 = and i64 %164, 1
  %490 = icmp eq i64 %489, 0
  br i1 %490, label %491, label %499

491:                                              ; preds = %487
  %492 = icmp slt i64 %488, %164
  br i1 %492, label %495, label %493

493:                                              ; preds = %491
  %494 = load double, ptr %328, align 8, !tbaa !42
  br label %495

495:                                              ; preds = %493, %491
  %496 = phi double [ %494, %493 ], [ %323, %491 ]
  %497 = getelementptr inbounds nuw <2 x double>, ptr %470, i64 %488
  store double %496, ptr %497, align 8, !tbaa !42
  %498 = getelementptr inbounds nuw <2 x double>, ptr %473, i64 %488
  store double %496, ptr %498, align 8, !tbaa !42
  br label %499

499:                                              ; preds = %487, %495
  %500 = icmp eq i64 %164, 0
  br i1 %500, label %539, label %501

501:                                              ; preds = %499
  %502 = getelementptr inbounds nuw i8, ptr %162, i64 2032
  %503 = load ptr, ptr %502, align 16, !tbaa !61
  %504 = getelementptr inbounds nuw double, ptr %503, i64 %6
  %505 = getelementptr inbounds nuw i8, ptr %162, i64 2024
  %506 = load ptr, ptr %505, align 8, !tbaa !50
  %507 = getelementptr inbounds nuw double, ptr %506, i64 %6
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
  %517 = load double, ptr %328, align 8, !tbaa !42
  br label %518

518:                                              ; preds = %512, %516
  %519 = phi double [ %517, %516 ], [ %323, %512 ]
  %520 = getelementptr inbounds nuw <2 x double>, ptr %470, i64 %513
  store double %519, ptr %520, align 8, !tbaa !42
  %521 = getelementptr inbounds nuw <2 x double>, ptr %473, i64 %513
  store double %519, ptr %521, align 8, !tbaa !42
  %522 = or disjoint i64 %513, 1
  %523 = icmp slt i64 %522, %164
  br i1 %523, label %526, label %524

524:                                              ; preds = %518
  %525 = load double, ptr %328, align 8, !tbaa !42
  br label %526

526:                                              ; preds = %524, %518
  %527 = phi double [ %525, %524 ], [ %323, %518 ]
  %528 = getelementptr inbounds nuw <2 x double>, ptr %470, i64 %522
  store double %527, ptr %528, align 8, !tbaa !42
  %529 = getelementptr inbounds nuw <2 x double>, ptr %473, i64 %522
  store double %527, ptr %529, align 8, !tbaa !42
  %530 = add nuw i64 %513, 2
  %531 = add i64 %514, 2
  %532 = icmp eq i64 %531, %477
  br i1 %532, label %487, label %512, !llvm.loop !155

533:                                              ; preds = %543, %501
  %534 = phi i64 [ 0, %501 ], [ %551, %543 ]
  %535 = icmp eq i64 %508, 0
  br i1 %535, label %539, label %536

536:                                              ; preds = %533
  %537 = getelementptr inbounds nuw <2 x double>, ptr %504, i64 %534
  store double %229, ptr %537, align 8, !tbaa !42
  %538 = getelementptr inbounds nuw <2 x double>, ptr %507, i64 %534
  store double %229, ptr %538, align 8, !tbaa !42
  br label %539

539:                                              ; preds = %536, %533, %465, %499
  %540 = add nuw nsw i64 %161, 1
  %541 = load i64, ptr %27, align 8, !tbaa !20
  %542 = icmp slt i64 %540, %541
  br i1 %542, label %160, label %61, !llvm.loop !156

543:                                              ; preds = %543, %510
  %544 = phi i64 [ 0, %510 ], [ %551, %543 ]
  %545 = phi i64 [ 0, %510 ], [ %552, %543 ]
  %546 = getelementptr inbounds nuw <2 x double>, ptr %504, i64 %544
  store double %229, ptr %546, align 8, !tbaa !42
  %547 = getelementptr inbounds nuw <2 x double>, ptr %507, i64 %544
  store double %229, ptr %547, align 8, !tbaa !42
  %548 = or disjoint i64 %544, 1
  %549 = getelementptr inbounds nuw <2 x double>, ptr %504, i64 %548
  store double %229, ptr %549, align 8, !tbaa !42
  %550 = getelementptr inbounds nuw <2 x double>, ptr %507, i64 %548
  store double %229, ptr %550, align 8, !tbaa !42
  %551 = add nuw nsw i64 %544, 2
  %552 = add i64 %545, 2
  %553 = icmp eq i64 %552, %511
  br i1 %553, label %533, label %543, !llvm.loop !157
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 16 dereferenceable(1584) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !158
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !159
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
  %19 = load double, ptr %18, align 8, !tbaa !42
  %20 = fptosi double %19 to i64
  %21 = getelementptr inbounds nuw i8, ptr %1, i64 120
  %22 = load ptr, ptr %21, align 8, !tbaa !160
  %23 = getelementptr inbounds i64, ptr %22, i64 %12
  %24 = load i64, ptr %23, align 8, !tbaa !30
  %25 = getelementptr inbounds nuw i8, ptr %0, i64 752
  %26 = getelementptr inbounds nuw double, ptr %25, i64 %10
  %27 = load double, ptr %26, align 8, !tbaa !42
  %28 = getelementptr inbounds nuw i8, ptr %0, i64 144
  %29 = getelementptr inbounds nuw double, ptr %28, i64 %10
  %30 = load double, ptr %29, align 8, !tbaa !42
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
  br i1 %68, label %69, label %36, !llvm.loop !161

69:                                               ; preds = %66, %3
  %70 = phi i64 [ %20, %3 ], [ %24, %66 ]
  %71 = sitofp i64 %70 to double
  store double %71, ptr %18, align 8, !tbaa !42
  %72 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %73 = getelementptr inbounds nuw double, ptr %72, i64 %10
  %74 = load double, ptr %73, align 8, !tbaa !42
  %75 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %76 = getelementptr inbounds nuw double, ptr %75, i64 %10
  store double %74, ptr %76, align 8, !tbaa !42
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 1552
  %78 = getelementptr inbounds nuw [2 x double], ptr %77, i64 0, i64 %10
  store double 1.000000e+00, ptr %78, align 8, !tbaa !42
  br label %292

79:                                               ; preds = %62
  %80 = getelementptr inbounds nuw i8, ptr %39, i64 16
  %81 = sitofp i64 %37 to double
  store double %81, ptr %18, align 8, !tbaa !42
  %82 = load double, ptr %35, align 8, !tbaa !42
  %83 = getelementptr inbounds nuw i8, ptr %0, i64 1056
  %84 = getelementptr inbounds nuw double, ptr %83, i64 %10
  store double %82, ptr %84, align 8, !tbaa !42
  %85 = getelementptr inbounds nuw i8, ptr %0, i64 1120
  %86 = getelementptr inbounds nuw double, ptr %85, i64 %10
  store double %50, ptr %86, align 8, !tbaa !42
  %87 = getelementptr inbounds nuw i8, ptr %39, i64 8
  %88 = load double, ptr %87, align 8, !tbaa !42
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1072
  %90 = getelementptr inbounds nuw double, ptr %89, i64 %10
  store double %88, ptr %90, align 8, !tbaa !42
  %91 = getelementptr inbounds nuw i8, ptr %39, i64 24
  %92 = load double, ptr %91, align 8, !tbaa !42
  %93 = getelementptr inbounds nuw i8, ptr %0, i64 1088
  %94 = getelementptr inbounds nuw double, ptr %93, i64 %10
  store double %92, ptr %94, align 8, !tbaa !42
  %95 = getelementptr inbounds nuw i8, ptr %39, i64 32
  %96 = load double, ptr %95, align 8, !tbaa !42
  %97 = getelementptr inbounds nuw i8, ptr %0, i64 1104
  %98 = getelementptr inbounds nuw double, ptr %97, i64 %10
  store double %96, ptr %98, align 8, !tbaa !42
  %99 = load double, ptr %80, align 8, !tbaa !42
  %100 = fcmp oeq double %99, 1.000000e+00
  %101 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %102 = getelementptr inbounds nuw double, ptr %101, i64 %10
  %103 = load double, ptr %102, align 8, !tbaa !42
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
  %124 = getelementptr inbounds nuw i8, ptr %121, i64 1008
  %125 = load <2 x double>, ptr %124, align 16, !tbaa !26
  %126 = fmul <2 x double> %123, %125
  %127 = fadd <2 x double> %118, %126
  %128 = or disjoint i64 %119, 1
  %129 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %128
  %130 = getelementptr inbounds nuw i8, ptr %129, i64 32
  %131 = load <2 x double>, ptr %130, align 16, !tbaa !26
  %132 = getelementptr inbounds nuw i8, ptr %129, i64 1008
  %133 = load <2 x double>, ptr %132, align 16, !tbaa !26
  %134 = fmul <2 x double> %131, %133
  %135 = fadd <2 x double> %127, %134
  %136 = or disjoint i64 %119, 2
  %137 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %136
  %138 = getelementptr inbounds nuw i8, ptr %137, i64 32
  %139 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %140 = getelementptr inbounds nuw i8, ptr %137, i64 1008
  %141 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %142 = fmul <2 x double> %139, %141
  %143 = fadd <2 x double> %135, %142
  %144 = or disjoint i64 %119, 3
  %145 = getelementptr inbounds nuw %struct.Piece, ptr %112, i64 %144
  %146 = getelementptr inbounds nuw i8, ptr %145, i64 32
  %147 = load <2 x double>, ptr %146, align 16, !tbaa !26
  %148 = getelementptr inbounds nuw i8, ptr %145, i64 1008
  %149 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %150 = fmul <2 x double> %147, %149
  %151 = fadd <2 x double> %143, %150
  %152 = add nuw nsw i64 %119, 4
  %153 = add i64 %120, 4
  %154 = icmp eq i64 %153, %116
  br i1 %154, label %155, label %117, !llvm.loop !162

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
  %167 = getelementptr inbounds nuw i8, ptr %164, i64 1008
  %168 = load <2 x double>, ptr %167, align 16, !tbaa !26
  %169 = fmul <2 x double> %166, %168
  %170 = fadd <2 x double> %161, %169
  %171 = add nuw nsw i64 %162, 1
  %172 = add i64 %163, 1
  %173 = icmp eq i64 %172, %113
  br i1 %173, label %174, label %160, !llvm.loop !163

174:                                              ; preds = %155, %160, %106
  %175 = phi <2 x double> [ zeroinitializer, %106 ], [ %156, %155 ], [ %170, %160 ]
  %176 = extractelement <2 x double> %175, i32 %2
  %177 = fmul double %176, 4.615260e+02
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %179 = getelementptr inbounds nuw double, ptr %178, i64 %10
  %180 = load double, ptr %179, align 8, !tbaa !42
  %181 = fmul double %180, %177
  %182 = fdiv double %181, %30
  %183 = fcmp ogt double %182, 0.000000e+00
  %184 = fneg double %182
  %185 = select i1 %183, double %184, double -0.000000e+00
  %186 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %187 = getelementptr inbounds nuw double, ptr %186, i64 %10
  %188 = load double, ptr %187, align 8, !tbaa !42
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
  store double %220, ptr %222, align 8, !tbaa !42
  br label %223

223:                                              ; preds = %79, %174
  %224 = fcmp une double %99, %103
  br i1 %224, label %225, label %264

225:                                              ; preds = %223
  %226 = getelementptr inbounds nuw i8, ptr %0, i64 1216
  %227 = getelementptr inbounds nuw double, ptr %226, i64 %10
  store double %99, ptr %227, align 8, !tbaa !42
  %228 = getelementptr inbounds nuw i8, ptr %0, i64 1280
  %229 = getelementptr inbounds nuw double, ptr %228, i64 %10
  store double %82, ptr %229, align 8, !tbaa !42
  %230 = getelementptr inbounds nuw i8, ptr %0, i64 464
  %231 = getelementptr inbounds nuw double, ptr %230, i64 %10
  %232 = load double, ptr %231, align 8, !tbaa !42
  %233 = getelementptr inbounds nuw i8, ptr %0, i64 1024
  %234 = getelementptr inbounds nuw double, ptr %233, i64 %10
  store double %232, ptr %234, align 8, !tbaa !42
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
  store double %30, ptr %242, align 8, !tbaa !42
  store double %30, ptr %26, align 8, !tbaa !42
  %243 = getelementptr inbounds nuw i8, ptr %0, i64 448
  %244 = getelementptr inbounds nuw double, ptr %243, i64 %10
  %245 = load double, ptr %244, align 8, !tbaa !42
  %246 = getelementptr inbounds nuw i8, ptr %0, i64 1200
  %247 = getelementptr inbounds nuw double, ptr %246, i64 %10
  store double %245, ptr %247, align 8, !tbaa !42
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
  %259 = getelementptr inbounds nuw %struct.Piece, ptr %255, i64 %258, i32 38
  store i64 -1, ptr %259, align 8, !tbaa !30
  %260 = getelementptr inbounds nuw %struct.Piece, ptr %255, i64 %258, i32 39
  store i64 %256, ptr %260, align 8, !tbaa !30
  %261 = add nuw nsw i64 %258, 1
  %262 = load i64, ptr %249, align 8, !tbaa !20
  %263 = icmp slt i64 %261, %262
  br i1 %263, label %257, label %264, !llvm.loop !164

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
  %40 = load double, ptr %39, align 8, !tbaa !42
  %41 = fcmp ugt double %32, %40
  br i1 %41, label %45, label %42

42:                                               ; preds = %36
  %43 = add nsw i64 %37, -1
  store i64 %43, ptr %27, align 8, !tbaa !30
  %44 = icmp sgt i64 %37, 1
  br i1 %44, label %36, label %45, !llvm.loop !165

45:                                               ; preds = %36, %42, %20
  %46 = phi i64 [ %33, %20 ], [ %37, %36 ], [ %43, %42 ]
  %47 = icmp slt i64 %46, %26
  br i1 %47, label %48, label %57

48:                                               ; preds = %45, %54
  %49 = phi i64 [ %55, %54 ], [ %46, %45 ]
  %50 = shl nsw i64 %49, 4
  %51 = getelementptr inbounds i8, ptr %31, i64 %50
  %52 = load double, ptr %51, align 8, !tbaa !42
  %53 = fcmp ule double %32, %52
  br i1 %53, label %62, label %54

54:                                               ; preds = %48
  %55 = add i64 %49, 1
  store i64 %55, ptr %27, align 8, !tbaa !30
  %56 = icmp eq i64 %55, %26
  br i1 %56, label %57, label %48, !llvm.loop !166

57:                                               ; preds = %54, %45
  %58 = shl i64 %26, 4
  %59 = getelementptr i8, ptr %31, i64 %58
  %60 = getelementptr i8, ptr %59, i64 -8
  %61 = load double, ptr %60, align 8, !tbaa !42
  br label %81

62:                                               ; preds = %48
  %63 = shl nsw i64 %49, 1
  %64 = or disjoint i64 %63, 1
  %65 = getelementptr inbounds double, ptr %31, i64 %64
  %66 = load double, ptr %65, align 8, !tbaa !42
  %67 = icmp sgt i64 %49, 0
  br i1 %67, label %68, label %81

68:                                               ; preds = %62
  %69 = shl i64 %49, 4
  %70 = getelementptr i8, ptr %31, i64 %69
  %71 = getelementptr i8, ptr %70, i64 -8
  %72 = load double, ptr %71, align 8, !tbaa !42
  %73 = getelementptr i8, ptr %70, i64 -16
  %74 = load double, ptr %73, align 8, !tbaa !42
  %75 = fsub double %32, %74
  %76 = load double, ptr %70, align 8, !tbaa !42
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
  %109 = load double, ptr %108, align 8, !tbaa !42
  %110 = fcmp ugt double %101, %109
  br i1 %110, label %114, label %111

111:                                              ; preds = %105
  %112 = add nsw i64 %106, -1
  store i64 %112, ptr %96, align 8, !tbaa !30
  %113 = icmp sgt i64 %106, 1
  br i1 %113, label %105, label %114, !llvm.loop !165

114:                                              ; preds = %105, %111, %88
  %115 = phi i64 [ %102, %88 ], [ %106, %105 ], [ %112, %111 ]
  %116 = icmp slt i64 %115, %94
  br i1 %116, label %117, label %126

117:                                              ; preds = %114, %123
  %118 = phi i64 [ %124, %123 ], [ %115, %114 ]
  %119 = shl nsw i64 %118, 4
  %120 = getelementptr inbounds i8, ptr %100, i64 %119
  %121 = load double, ptr %120, align 8, !tbaa !42
  %122 = fcmp ule double %101, %121
  br i1 %122, label %131, label %123

123:                                              ; preds = %117
  %124 = add i64 %118, 1
  store i64 %124, ptr %96, align 8, !tbaa !30
  %125 = icmp eq i64 %124, %94
  br i1 %125, label %126, label %117, !llvm.loop !166

126:                                              ; preds = %123, %114
  %127 = shl i64 %94, 4
  %128 = getelementptr i8, ptr %100, i64 %127
  %129 = getelementptr i8, ptr %128, i64 -8
  %130 = load double, ptr %129, align 8, !tbaa !42
  br label %150

131:                                              ; preds = %117
  %132 = shl nsw i64 %118, 1
  %133 = or disjoint i64 %132, 1
  %134 = getelementptr inbounds double, ptr %100, i64 %133
  %135 = load double, ptr %134, align 8, !tbaa !42
  %136 = icmp sgt i64 %118, 0
  br i1 %136, label %137, label %150

137:                                              ; preds = %131
  %138 = shl i64 %118, 4
  %139 = getelementptr i8, ptr %100, i64 %138
  %140 = getelementptr i8, ptr %139, i64 -8
  %141 = load double, ptr %140, align 8, !tbaa !42
  %142 = getelementptr i8, ptr %139, i64 -16
  %143 = load double, ptr %142, align 8, !tbaa !42
  %144 = fsub double %101, %143
  %145 = load double, ptr %139, align 8, !tbaa !42
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
!31 = !{!32, !6, i64 1888}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 736, !7, i64 928, !7, i64 1120, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1520, !7, i64 1536, !7, i64 1552, !7, i64 1568, !7, i64 1584, !7, i64 1600, !7, i64 1616, !7, i64 1632, !7, i64 1648, !7, i64 1664, !7, i64 1680, !7, i64 1696, !7, i64 1712, !7, i64 1728, !7, i64 1744, !7, i64 1760, !7, i64 1776, !7, i64 1792, !7, i64 1808, !7, i64 1824, !7, i64 1840, !7, i64 1856, !7, i64 1872, !6, i64 1888, !11, i64 1896, !11, i64 1904, !11, i64 1912, !11, i64 1920, !11, i64 1928, !11, i64 1936, !11, i64 1944, !11, i64 1952, !11, i64 1960, !11, i64 1968, !11, i64 1976, !11, i64 1984, !11, i64 1992, !11, i64 2000, !11, i64 2008, !11, i64 2016, !11, i64 2024, !11, i64 2032, !11, i64 2040, !11, i64 2048, !11, i64 2056, !11, i64 2064, !11, i64 2072, !11, i64 2080}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560, !7, i64 576, !7, i64 592, !7, i64 608, !7, i64 624, !7, i64 640, !7, i64 656, !7, i64 672, !7, i64 688, !7, i64 704, !7, i64 720}
!34 = !{!11, !11, i64 0}
!35 = !{!32, !11, i64 2008}
!36 = distinct !{!36, !37}
!37 = !{!"llvm.loop.mustprogress"}
!38 = !{!17, !11, i64 1568}
!39 = !{!5, !6, i64 0}
!40 = !{!5, !6, i64 176}
!41 = !{!5, !6, i64 184}
!42 = !{!9, !9, i64 0}
!43 = !{!5, !10, i64 208}
!44 = !{!5, !10, i64 192}
!45 = !{!5, !10, i64 200}
!46 = !{!32, !11, i64 1904}
!47 = !{!32, !11, i64 1936}
!48 = !{!32, !11, i64 1992}
!49 = !{!32, !11, i64 2072}
!50 = !{!32, !11, i64 2024}
!51 = distinct !{!51, !37}
!52 = distinct !{!52, !37}
!53 = distinct !{!53, !37}
!54 = distinct !{!54, !37}
!55 = distinct !{!55, !37}
!56 = !{!32, !11, i64 1912}
!57 = !{!32, !11, i64 1896}
!58 = !{!32, !11, i64 1920}
!59 = !{!32, !11, i64 2080}
!60 = distinct !{!60, !37}
!61 = !{!32, !11, i64 2032}
!62 = !{!32, !11, i64 2040}
!63 = distinct !{!63, !37}
!64 = !{!32, !11, i64 1928}
!65 = distinct !{!65, !37}
!66 = distinct !{!66, !37}
!67 = !{!32, !11, i64 1984}
!68 = !{!32, !11, i64 1960}
!69 = !{!32, !11, i64 1968}
!70 = !{!32, !11, i64 1976}
!71 = !{!32, !11, i64 1944}
!72 = !{!32, !11, i64 1952}
!73 = distinct !{!73, !37}
!74 = distinct !{!74, !37}
!75 = !{!32, !11, i64 2064}
!76 = distinct !{!76, !37}
!77 = !{!32, !11, i64 2048}
!78 = !{!32, !11, i64 2056}
!79 = distinct !{!79, !37}
!80 = distinct !{!80, !37}
!81 = distinct !{!81, !37}
!82 = distinct !{!82, !37}
!83 = !{!84}
!84 = distinct !{!84, !85, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!85 = distinct !{!85, !"_ZL9evaporateR5GroupDv2_d"}
!86 = !{!87, !84}
!87 = distinct !{!87, !88, !"_ZL8flash_ofRK5GroupRK5PieceDv2_d: argument 0"}
!88 = distinct !{!88, !"_ZL8flash_ofRK5GroupRK5PieceDv2_d"}
!89 = distinct !{!89, !37}
!90 = distinct !{!90, !37}
!91 = !{!92}
!92 = distinct !{!92, !93, !"_ZL7outflowRK5GroupDv2_dS2_: argument 0"}
!93 = distinct !{!93, !"_ZL7outflowRK5GroupDv2_dS2_"}
!94 = !{!95}
!95 = distinct !{!95, !96, !"_ZL8condenseR5GroupDv2_d: argument 0"}
!96 = distinct !{!96, !"_ZL8condenseR5GroupDv2_d"}
!97 = distinct !{!97, !37}
!98 = !{!99}
!99 = distinct !{!99, !100, !"_ZL9evaporateR5GroupDv2_d: argument 0"}
!100 = distinct !{!100, !"_ZL9evaporateR5GroupDv2_d"}
!101 = !{!102, !99}
!102 = distinct !{!102, !103, !"_ZL8flash_ofRK5GroupRK5PieceDv2_d: argument 0"}
!103 = distinct !{!103, !"_ZL8flash_ofRK5GroupRK5PieceDv2_d"}
!104 = distinct !{!104, !37}
!105 = distinct !{!105, !37}
!106 = !{!32, !11, i64 2016}
!107 = distinct !{!107, !37}
!108 = distinct !{!108, !37}
!109 = distinct !{!109, !37}
!110 = distinct !{!110, !37}
!111 = distinct !{!111, !37}
!112 = distinct !{!112, !37}
!113 = distinct !{!113, !37}
!114 = distinct !{!114, !37}
!115 = distinct !{!115, !116}
!116 = !{!"llvm.loop.unroll.disable"}
!117 = distinct !{!117, !37}
!118 = !{!32, !11, i64 2000}
!119 = distinct !{!119, !37}
!120 = distinct !{!120, !37}
!121 = distinct !{!121, !37}
!122 = distinct !{!122, !37}
!123 = distinct !{!123, !37}
!124 = distinct !{!124, !37}
!125 = distinct !{!125, !37}
!126 = distinct !{!126, !37}
!127 = distinct !{!127, !37}
!128 = distinct !{!128, !37}
!129 = distinct !{!129, !37}
!130 = distinct !{!130, !37}
!131 = !{!5, !6, i64 40}
!132 = distinct !{!132, !37}
!133 = distinct !{!133, !37}
!134 = !{!5, !6, i64 56}
!135 = !{!10, !10, i64 0}
!136 = !{!5, !12, i64 168}
!137 = !{!5, !10, i64 160}
!138 = distinct !{!138, !37}
!139 = distinct !{!139, !116}
!140 = distinct !{!140, !37}
!141 = distinct !{!141, !37}
!142 = distinct !{!142, !116}
!143 = distinct !{!143, !116}
!144 = !{!5, !10, i64 80}
!145 = !{!5, !10, i64 72}
!146 = !{!5, !10, i64 96}
!147 = !{!5, !12, i64 104}
!148 = distinct !{!148, !37}
!149 = distinct !{!149, !37}
!150 = distinct !{!150, !37}
!151 = distinct !{!151, !116}
!152 = distinct !{!152, !37}
!153 = distinct !{!153, !37}
!154 = distinct !{!154, !37}
!155 = distinct !{!155, !37}
!156 = distinct !{!156, !37}
!157 = distinct !{!157, !37}
!158 = !{!5, !10, i64 88}
!159 = !{!5, !12, i64 112}
!160 = !{!5, !12, i64 120}
!161 = distinct !{!161, !37}
!162 = distinct !{!162, !37}
!163 = distinct !{!163, !116}
!164 = distinct !{!164, !37}
!165 = distinct !{!165, !37}
!166 = distinct !{!166, !37}
