; Made by scripts/lanes.py from sources of sha256 e30e3c9571212f0c96a8bec273b65f29bd4d059245f6cc48f54a331587b4a16e.
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
  %27 = getelementptr inbounds nuw i8, ptr %1, i64 1536
  %28 = getelementptr inbounds nuw i8, ptr %1, i64 1528
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
  %107 = getelementptr inbounds nuw i8, ptr %1, i64 1520
  store ptr %106, ptr %107, align 16, !tbaa !38
  %108 = load i64, ptr %0, align 8, !tbaa !39
  %109 = icmp sgt i64 %108, 0
  br i1 %109, label %110, label %111

110:                                              ; preds = %105
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %114

111:                                              ; preds = %105
  %112 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %113 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, i64 noundef 0) #7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  store i64 0, ptr %113, align 8, !tbaa !30
  store i64 0, ptr %112, align 8, !tbaa !30
  br label %114

114:                                              ; preds = %111, %110
  %115 = load i64, ptr %26, align 8, !tbaa !27
  %116 = load i64, ptr %0, align 8, !tbaa !39
  %117 = icmp slt i64 %115, %116
  br i1 %117, label %121, label %118

118:                                              ; preds = %114
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, i64 noundef 0) #7
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  %119 = getelementptr inbounds nuw i8, ptr %1, i64 1368
  store i64 0, ptr %119, align 8, !tbaa !30
  %120 = getelementptr inbounds nuw i8, ptr %1, i64 1384
  store i64 0, ptr %120, align 8, !tbaa !30
  br label %122

121:                                              ; preds = %114
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %122

122:                                              ; preds = %118, %121, %3
  %123 = getelementptr inbounds nuw i8, ptr %1, i64 1360
  %124 = getelementptr inbounds nuw i8, ptr %0, i64 176
  %125 = getelementptr inbounds nuw i8, ptr %0, i64 184
  %126 = load i64, ptr %124, align 8, !tbaa !40
  %127 = load i64, ptr %125, align 8, !tbaa !41
  %128 = sub nsw i64 %126, %127
  %129 = icmp slt i64 %128, 4
  br i1 %129, label %4806, label %130

130:                                              ; preds = %122
  %131 = getelementptr inbounds nuw i8, ptr %1, i64 1504
  %132 = getelementptr inbounds nuw i8, ptr %1, i64 592
  %133 = getelementptr inbounds nuw i8, ptr %1, i64 600
  %134 = getelementptr inbounds nuw i8, ptr %1, i64 1424
  %135 = getelementptr inbounds nuw i8, ptr %0, i64 208
  %136 = getelementptr inbounds nuw i8, ptr %1, i64 1136
  %137 = getelementptr inbounds nuw i8, ptr %1, i64 1152
  %138 = getelementptr inbounds nuw i8, ptr %1, i64 1168
  %139 = getelementptr inbounds nuw i8, ptr %1, i64 1232
  %140 = getelementptr inbounds nuw i8, ptr %1, i64 1312
  %141 = getelementptr inbounds nuw i8, ptr %1, i64 576
  %142 = getelementptr inbounds nuw i8, ptr %1, i64 1528
  %143 = getelementptr inbounds nuw i8, ptr %0, i64 192
  %144 = getelementptr inbounds nuw i8, ptr %0, i64 200
  %145 = getelementptr inbounds nuw i8, ptr %1, i64 616
  %146 = getelementptr inbounds nuw i8, ptr %1, i64 1376
  %147 = getelementptr inbounds nuw i8, ptr %1, i64 480
  %148 = getelementptr inbounds nuw i8, ptr %1, i64 496
  %149 = getelementptr inbounds nuw i8, ptr %1, i64 976
  %150 = getelementptr inbounds nuw i8, ptr %1, i64 1280
  %151 = getelementptr inbounds nuw i8, ptr %1, i64 1216
  %152 = getelementptr inbounds nuw i8, ptr %1, i64 1024
  %153 = getelementptr inbounds nuw i8, ptr %1, i64 416
  %154 = getelementptr inbounds nuw i8, ptr %1, i64 1056
  %155 = getelementptr inbounds nuw i8, ptr %1, i64 1120
  %156 = getelementptr inbounds nuw i8, ptr %1, i64 1264
  %157 = getelementptr inbounds nuw i8, ptr %1, i64 584
  %158 = getelementptr inbounds nuw i8, ptr %1, i64 1008
  %159 = getelementptr inbounds nuw i8, ptr %1, i64 992
  %160 = getelementptr inbounds nuw i8, ptr %1, i64 1408
  %161 = getelementptr inbounds nuw i8, ptr %1, i64 928
  %162 = getelementptr inbounds nuw i8, ptr %1, i64 944
  %163 = getelementptr inbounds nuw i8, ptr %1, i64 960
  %164 = getelementptr inbounds nuw i8, ptr %1, i64 640
  %165 = getelementptr inbounds nuw i8, ptr %1, i64 736
  %166 = getelementptr inbounds nuw i8, ptr %1, i64 832
  %167 = getelementptr inbounds nuw i8, ptr %1, i64 1392
  %168 = getelementptr inbounds nuw i8, ptr %1, i64 64
  %169 = getelementptr inbounds nuw i8, ptr %1, i64 1344
  %170 = getelementptr inbounds nuw i8, ptr %1, i64 16
  %171 = getelementptr inbounds nuw i8, ptr %1, i64 32
  %172 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %173 = getelementptr inbounds nuw i8, ptr %1, i64 96
  %174 = getelementptr inbounds nuw i8, ptr %1, i64 384
  %175 = getelementptr inbounds nuw i8, ptr %1, i64 1328
  %176 = getelementptr inbounds nuw i8, ptr %1, i64 368
  %177 = getelementptr inbounds nuw i8, ptr %1, i64 352
  %178 = getelementptr inbounds nuw i8, ptr %1, i64 528
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 400
  %180 = getelementptr inbounds nuw i8, ptr %1, i64 448
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 512
  %182 = getelementptr inbounds nuw i8, ptr %1, i64 144
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %186 = getelementptr inbounds nuw i8, ptr %1, i64 304
  %187 = getelementptr inbounds nuw i8, ptr %1, i64 128
  %188 = getelementptr inbounds nuw i8, ptr %1, i64 288
  %189 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %190 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %191 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %192 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %193 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %194 = getelementptr inbounds nuw i8, ptr %1, i64 176
  %195 = getelementptr inbounds nuw i8, ptr %1, i64 192
  %196 = getelementptr inbounds nuw i8, ptr %1, i64 224
  %197 = getelementptr inbounds nuw i8, ptr %1, i64 240
  %198 = getelementptr inbounds nuw i8, ptr %1, i64 208
  %199 = getelementptr inbounds nuw i8, ptr %1, i64 256
  %200 = getelementptr inbounds nuw i8, ptr %1, i64 272
  %201 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %202 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %203 = getelementptr inbounds nuw i8, ptr %1, i64 1184
  %204 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %205 = getelementptr inbounds nuw i8, ptr %1, i64 1072
  %206 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %207 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %208 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %209 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %210 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %211 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %212 = getelementptr inbounds nuw i8, ptr %1, i64 624
  %213 = getelementptr inbounds nuw i8, ptr %1, i64 608
  %214 = getelementptr inbounds nuw i8, ptr %1, i64 1248
  %215 = getelementptr inbounds nuw i8, ptr %1, i64 1200
  %216 = getelementptr inbounds nuw i8, ptr %1, i64 432
  %217 = getelementptr inbounds nuw i8, ptr %1, i64 80
  %218 = getelementptr inbounds nuw i8, ptr %1, i64 1296
  %219 = getelementptr inbounds nuw i8, ptr %1, i64 1088
  %220 = getelementptr inbounds nuw i8, ptr %1, i64 1104
  %221 = getelementptr inbounds nuw i8, ptr %1, i64 464
  %222 = getelementptr inbounds nuw i8, ptr %1, i64 1520
  %223 = getelementptr inbounds nuw i8, ptr %1, i64 1040
  %224 = getelementptr inbounds nuw i8, ptr %0, i64 40
  %225 = getelementptr inbounds nuw i8, ptr %1, i64 1440
  %226 = getelementptr inbounds nuw i8, ptr %0, i64 56
  %227 = getelementptr inbounds nuw i8, ptr %0, i64 168
  %228 = getelementptr inbounds nuw i8, ptr %0, i64 160
  %229 = getelementptr inbounds nuw i8, ptr %0, i64 48
  %230 = getelementptr inbounds nuw i8, ptr %1, i64 1488
  %231 = getelementptr inbounds nuw i8, ptr %1, i64 544
  %232 = getelementptr inbounds nuw i8, ptr %1, i64 656
  %233 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %234 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %235 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %236 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %237 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %238 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %239 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %240 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %241 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %242 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %243 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %244 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %245 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %246 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %247 = getelementptr inbounds nuw i8, ptr %1, i64 848
  %248 = getelementptr inbounds nuw i8, ptr %1, i64 752
  %249 = getelementptr inbounds nuw i8, ptr %1, i64 864
  %250 = getelementptr inbounds nuw i8, ptr %1, i64 768
  %251 = getelementptr inbounds nuw i8, ptr %1, i64 672
  %252 = getelementptr inbounds nuw i8, ptr %1, i64 880
  %253 = getelementptr inbounds nuw i8, ptr %1, i64 784
  %254 = getelementptr inbounds nuw i8, ptr %1, i64 688
  %255 = getelementptr inbounds nuw i8, ptr %1, i64 896
  %256 = getelementptr inbounds nuw i8, ptr %1, i64 800
  %257 = getelementptr inbounds nuw i8, ptr %1, i64 704
  %258 = getelementptr inbounds nuw i8, ptr %1, i64 912
  %259 = getelementptr inbounds nuw i8, ptr %1, i64 816
  %260 = getelementptr inbounds nuw i8, ptr %1, i64 720
  %261 = getelementptr inbounds nuw i8, ptr %1, i64 1512
  br label %262

262:                                              ; preds = %519, %130
  %263 = phi i1 [ true, %130 ], [ %522, %519 ]
  %264 = phi i64 [ 0, %130 ], [ %520, %519 ]
  %265 = phi i1 [ true, %130 ], [ %521, %519 ]
  %266 = getelementptr inbounds nuw i64, ptr %123, i64 %264
  %267 = load i64, ptr %266, align 8, !tbaa !30
  %268 = icmp eq i64 %267, 0
  br i1 %268, label %517, label %269

269:                                              ; preds = %262
  %270 = getelementptr inbounds nuw [2 x double], ptr %131, i64 0, i64 %264
  %271 = load double, ptr %270, align 8, !tbaa !42
  %272 = fcmp oeq double %271, 0.000000e+00
  br i1 %272, label %517, label %273

273:                                              ; preds = %269
  %274 = load i64, ptr %132, align 16, !tbaa !21
  %275 = load i64, ptr %133, align 8, !tbaa !22
  %276 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %264
  %277 = load i64, ptr %276, align 8, !tbaa !30
  %278 = load ptr, ptr %135, align 8, !tbaa !43
  %279 = mul nsw i64 %277, 40
  %280 = getelementptr inbounds i8, ptr %278, i64 %279
  %281 = getelementptr inbounds nuw double, ptr %136, i64 %264
  %282 = load double, ptr %281, align 8, !tbaa !42
  store double %282, ptr %280, align 8, !tbaa !42
  %283 = getelementptr inbounds nuw double, ptr %137, i64 %264
  %284 = load double, ptr %283, align 8, !tbaa !42
  %285 = getelementptr inbounds nuw i8, ptr %280, i64 8
  store double %284, ptr %285, align 8, !tbaa !42
  %286 = getelementptr inbounds nuw double, ptr %138, i64 %264
  %287 = load double, ptr %286, align 8, !tbaa !42
  %288 = getelementptr inbounds nuw i8, ptr %280, i64 16
  store double %287, ptr %288, align 8, !tbaa !42
  %289 = getelementptr inbounds nuw double, ptr %139, i64 %264
  %290 = load double, ptr %289, align 8, !tbaa !42
  %291 = getelementptr inbounds nuw i8, ptr %280, i64 24
  store double %290, ptr %291, align 8, !tbaa !42
  %292 = getelementptr inbounds nuw double, ptr %140, i64 %264
  %293 = load double, ptr %292, align 8, !tbaa !42
  %294 = getelementptr inbounds nuw i8, ptr %280, i64 32
  store double %293, ptr %294, align 8, !tbaa !42
  %295 = load i64, ptr %141, align 16, !tbaa !16
  %296 = icmp sgt i64 %295, 0
  br i1 %296, label %297, label %501

297:                                              ; preds = %273
  %298 = load ptr, ptr %142, align 8, !tbaa !28
  %299 = load ptr, ptr %143, align 8, !tbaa !44
  %300 = mul nsw i64 %295, %277
  %301 = mul i64 %274, 3
  %302 = load ptr, ptr %144, align 8, !tbaa !45
  %303 = icmp sgt i64 %274, 0
  %304 = getelementptr inbounds nuw double, ptr %4, i64 %264
  %305 = shl i64 %274, 4
  %306 = getelementptr inbounds nuw double, ptr %5, i64 %264
  %307 = icmp sgt i64 %275, 0
  %308 = and i64 %275, 1
  %309 = icmp eq i64 %275, 1
  %310 = and i64 %275, 9223372036854775806
  %311 = icmp eq i64 %308, 0
  br label %312

312:                                              ; preds = %409, %297
  %313 = phi i64 [ 0, %297 ], [ %476, %409 ]
  %314 = getelementptr inbounds nuw %struct.Piece, ptr %298, i64 %313
  %315 = getelementptr inbounds nuw i8, ptr %314, i64 384
  %316 = getelementptr inbounds nuw double, ptr %315, i64 %264
  %317 = load double, ptr %316, align 8, !tbaa !42
  %318 = getelementptr inbounds nuw i8, ptr %314, i64 1088
  %319 = getelementptr inbounds nuw double, ptr %318, i64 %264
  %320 = load double, ptr %319, align 8, !tbaa !42
  %321 = add nsw i64 %313, %300
  %322 = mul i64 %301, %321
  %323 = getelementptr inbounds double, ptr %299, i64 %322
  %324 = mul nsw i64 %321, 40
  %325 = getelementptr inbounds i8, ptr %302, i64 %324
  br i1 %303, label %326, label %343

326:                                              ; preds = %312
  %327 = getelementptr inbounds nuw i8, ptr %314, i64 1904
  %328 = load ptr, ptr %327, align 16, !tbaa !46
  %329 = getelementptr inbounds nuw i8, ptr %314, i64 1936
  %330 = load ptr, ptr %329, align 16, !tbaa !47
  %331 = getelementptr inbounds nuw double, ptr %330, i64 %264
  %332 = getelementptr double, ptr %323, i64 %274
  %333 = getelementptr inbounds nuw i8, ptr %314, i64 1104
  %334 = getelementptr inbounds nuw i8, ptr %314, i64 1992
  %335 = load ptr, ptr %334, align 8, !tbaa !48
  %336 = getelementptr inbounds nuw i8, ptr %314, i64 1888
  %337 = load i64, ptr %336, align 16, !tbaa !31
  %338 = getelementptr inbounds nuw i8, ptr %314, i64 96
  %339 = getelementptr inbounds nuw i8, ptr %314, i64 112
  %340 = getelementptr inbounds nuw i8, ptr %314, i64 128
  %341 = getelementptr inbounds nuw i8, ptr %314, i64 160
  %342 = getelementptr i8, ptr %323, i64 %305
  br label %356

343:                                              ; preds = %385, %312
  %344 = phi double [ %320, %312 ], [ %392, %385 ]
  br i1 %307, label %345, label %409

345:                                              ; preds = %343
  %346 = getelementptr inbounds nuw i8, ptr %314, i64 2072
  %347 = load ptr, ptr %346, align 8, !tbaa !49
  %348 = getelementptr inbounds nuw double, ptr %347, i64 %264
  %349 = getelementptr inbounds nuw i8, ptr %314, i64 192
  %350 = getelementptr inbounds nuw double, ptr %349, i64 %264
  %351 = load double, ptr %350, align 8, !tbaa !42
  %352 = getelementptr inbounds nuw i8, ptr %314, i64 2024
  %353 = load ptr, ptr %352, align 8, !tbaa !50
  %354 = getelementptr inbounds nuw double, ptr %353, i64 %264
  %355 = load double, ptr %348, align 8, !tbaa !42
  br i1 %309, label %395, label %478

356:                                              ; preds = %385, %326
  %357 = phi double [ %320, %326 ], [ %392, %385 ]
  %358 = phi i64 [ 0, %326 ], [ %393, %385 ]
  %359 = getelementptr inbounds nuw <2 x double>, ptr %328, i64 %358
  %360 = getelementptr inbounds nuw double, ptr %359, i64 %264
  %361 = load double, ptr %360, align 8, !tbaa !42
  %362 = getelementptr inbounds nuw double, ptr %323, i64 %358
  store double %361, ptr %362, align 8, !tbaa !42
  %363 = getelementptr inbounds nuw <2 x double>, ptr %331, i64 %358
  %364 = load double, ptr %363, align 8, !tbaa !42
  %365 = getelementptr double, ptr %332, i64 %358
  store double %364, ptr %365, align 8, !tbaa !42
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %4) #8
  %366 = load <2 x double>, ptr %333, align 16, !tbaa !26
  %367 = getelementptr inbounds nuw <2 x double>, ptr %335, i64 %358
  %368 = load <2 x double>, ptr %367, align 16, !tbaa !26
  %369 = icmp slt i64 %358, %337
  %370 = load <2 x double>, ptr %315, align 16
  %371 = fsub <2 x double> %366, %370
  %372 = select i1 %369, <2 x double> %370, <2 x double> %371
  %373 = fmul <2 x double> %368, %372
  store <2 x double> %373, ptr %4, align 16, !tbaa !26
  call void @llvm.lifetime.start.p0(i64 16, ptr nonnull %5) #8
  %374 = load <2 x double>, ptr %359, align 16, !tbaa !26
  br i1 %369, label %375, label %377

375:                                              ; preds = %356
  %376 = load <2 x double>, ptr %341, align 16, !tbaa !26
  br label %385

377:                                              ; preds = %356
  %378 = load <2 x double>, ptr %338, align 16, !tbaa !26
  %379 = load <2 x double>, ptr %339, align 16, !tbaa !26
  %380 = load <2 x double>, ptr %340, align 16, !tbaa !26
  %381 = fmul <2 x double> %374, %380
  %382 = fmul <2 x double> %381, splat (double 0x3FD5555555555555)
  %383 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %379, <2 x double> splat (double 5.000000e-01), <2 x double> %382)
  %384 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %374, <2 x double> %383, <2 x double> %378)
  br label %385

385:                                              ; preds = %377, %375
  %386 = phi <2 x double> [ %376, %375 ], [ %384, %377 ]
  %387 = fmul <2 x double> %374, %386
  %388 = fmul <2 x double> %373, %387
  store <2 x double> %388, ptr %5, align 16, !tbaa !26
  %389 = load double, ptr %304, align 8, !tbaa !42
  %390 = getelementptr double, ptr %342, i64 %358
  store double %389, ptr %390, align 8, !tbaa !42
  %391 = load double, ptr %306, align 8, !tbaa !42
  %392 = fadd double %357, %391
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %5) #8
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  %393 = add nuw nsw i64 %358, 1
  %394 = icmp eq i64 %393, %274
  br i1 %394, label %343, label %356, !llvm.loop !51

395:                                              ; preds = %478, %345
  %396 = phi double [ poison, %345 ], [ %498, %478 ]
  %397 = phi double [ %355, %345 ], [ %493, %478 ]
  %398 = phi double [ %344, %345 ], [ %498, %478 ]
  %399 = phi i64 [ 0, %345 ], [ %491, %478 ]
  br i1 %311, label %409, label %400

400:                                              ; preds = %395
  %401 = getelementptr <2 x double>, ptr %348, i64 %399
  %402 = getelementptr i8, ptr %401, i64 16
  %403 = load double, ptr %402, align 8, !tbaa !42
  %404 = fsub double %403, %397
  %405 = fmul double %351, %404
  %406 = getelementptr inbounds nuw <2 x double>, ptr %354, i64 %399
  %407 = load double, ptr %406, align 8, !tbaa !42
  %408 = tail call double @llvm.fmuladd.f64(double %405, double %407, double %398)
  br label %409

409:                                              ; preds = %400, %395, %343
  %410 = phi double [ %344, %343 ], [ %396, %395 ], [ %408, %400 ]
  %411 = getelementptr inbounds nuw i8, ptr %314, i64 240
  %412 = getelementptr inbounds nuw double, ptr %411, i64 %264
  %413 = load double, ptr %412, align 8, !tbaa !42
  %414 = getelementptr inbounds nuw i8, ptr %314, i64 96
  %415 = getelementptr inbounds nuw double, ptr %414, i64 %264
  %416 = load double, ptr %415, align 8, !tbaa !42
  %417 = getelementptr inbounds nuw i8, ptr %314, i64 112
  %418 = getelementptr inbounds nuw double, ptr %417, i64 %264
  %419 = load double, ptr %418, align 8, !tbaa !42
  %420 = getelementptr inbounds nuw i8, ptr %314, i64 128
  %421 = getelementptr inbounds nuw double, ptr %420, i64 %264
  %422 = load double, ptr %421, align 8, !tbaa !42
  %423 = fmul double %413, %422
  %424 = fdiv double %423, 3.000000e+00
  %425 = tail call double @llvm.fmuladd.f64(double %419, double 5.000000e-01, double %424)
  %426 = tail call double @llvm.fmuladd.f64(double %413, double %425, double %416)
  %427 = fmul double %413, %426
  %428 = getelementptr inbounds nuw i8, ptr %314, i64 352
  %429 = getelementptr inbounds nuw double, ptr %428, i64 %264
  %430 = load double, ptr %429, align 8, !tbaa !42
  %431 = fsub double %430, %317
  %432 = getelementptr inbounds nuw i8, ptr %314, i64 160
  %433 = getelementptr inbounds nuw double, ptr %432, i64 %264
  %434 = load double, ptr %433, align 8, !tbaa !42
  %435 = fmul double %317, %434
  %436 = fmul double %413, %435
  %437 = tail call double @llvm.fmuladd.f64(double %431, double %427, double %436)
  %438 = getelementptr inbounds nuw i8, ptr %314, i64 1024
  %439 = getelementptr inbounds nuw double, ptr %438, i64 %264
  %440 = load double, ptr %439, align 8, !tbaa !42
  %441 = getelementptr inbounds nuw i8, ptr %314, i64 1040
  %442 = getelementptr inbounds nuw double, ptr %441, i64 %264
  %443 = load double, ptr %442, align 8, !tbaa !42
  %444 = fsub double %440, %443
  %445 = fsub double %410, %437
  %446 = fsub double %444, %445
  %447 = fcmp ogt double %440, 0.000000e+00
  %448 = fneg double %440
  %449 = select i1 %447, double %440, double %448
  %450 = fcmp ogt double %443, 0.000000e+00
  %451 = fneg double %443
  %452 = select i1 %450, double %443, double %451
  %453 = fadd double %449, %452
  %454 = fcmp ogt double %446, 0.000000e+00
  %455 = fneg double %446
  %456 = select i1 %454, double %446, double %455
  %457 = fcmp ogt double %453, 1.000000e+00
  %458 = select i1 %457, double %453, double 1.000000e+00
  %459 = fdiv double %456, %458
  store double %459, ptr %325, align 8, !tbaa !42
  %460 = getelementptr inbounds nuw i8, ptr %314, i64 1008
  %461 = getelementptr inbounds nuw double, ptr %460, i64 %264
  %462 = load double, ptr %461, align 8, !tbaa !42
  %463 = getelementptr inbounds nuw i8, ptr %325, i64 8
  store double %462, ptr %463, align 8, !tbaa !42
  %464 = getelementptr inbounds nuw i8, ptr %314, i64 960
  %465 = getelementptr inbounds nuw double, ptr %464, i64 %264
  %466 = load double, ptr %465, align 8, !tbaa !42
  %467 = getelementptr inbounds nuw i8, ptr %325, i64 16
  store double %466, ptr %467, align 8, !tbaa !42
  %468 = getelementptr inbounds nuw i8, ptr %314, i64 976
  %469 = getelementptr inbounds nuw double, ptr %468, i64 %264
  %470 = load double, ptr %469, align 8, !tbaa !42
  %471 = getelementptr inbounds nuw i8, ptr %325, i64 24
  store double %470, ptr %471, align 8, !tbaa !42
  %472 = getelementptr inbounds nuw i8, ptr %314, i64 944
  %473 = getelementptr inbounds nuw double, ptr %472, i64 %264
  %474 = load double, ptr %473, align 8, !tbaa !42
  %475 = getelementptr inbounds nuw i8, ptr %325, i64 32
  store double %474, ptr %475, align 8, !tbaa !42
  %476 = add nuw nsw i64 %313, 1
  %477 = icmp eq i64 %476, %295
  br i1 %477, label %501, label %312, !llvm.loop !52

478:                                              ; preds = %345, %478
  %479 = phi double [ %493, %478 ], [ %355, %345 ]
  %480 = phi double [ %498, %478 ], [ %344, %345 ]
  %481 = phi i64 [ %491, %478 ], [ 0, %345 ]
  %482 = phi i64 [ %499, %478 ], [ 0, %345 ]
  %483 = or disjoint i64 %481, 1
  %484 = getelementptr inbounds nuw <2 x double>, ptr %348, i64 %483
  %485 = load double, ptr %484, align 8, !tbaa !42
  %486 = fsub double %485, %479
  %487 = fmul double %351, %486
  %488 = getelementptr inbounds nuw <2 x double>, ptr %354, i64 %481
  %489 = load double, ptr %488, align 8, !tbaa !42
  %490 = tail call double @llvm.fmuladd.f64(double %487, double %489, double %480)
  %491 = add nuw nsw i64 %481, 2
  %492 = getelementptr inbounds nuw <2 x double>, ptr %348, i64 %491
  %493 = load double, ptr %492, align 8, !tbaa !42
  %494 = fsub double %493, %485
  %495 = fmul double %351, %494
  %496 = getelementptr inbounds nuw <2 x double>, ptr %354, i64 %483
  %497 = load double, ptr %496, align 8, !tbaa !42
  %498 = tail call double @llvm.fmuladd.f64(double %495, double %497, double %490)
  %499 = add i64 %482, 2
  %500 = icmp eq i64 %499, %310
  br i1 %500, label %395, label %478, !llvm.loop !53

501:                                              ; preds = %409, %273
  %502 = load i64, ptr %145, align 8, !tbaa !27
  %503 = load i64, ptr %0, align 8, !tbaa !39
  %504 = icmp slt i64 %502, %503
  br i1 %504, label %507, label %505

505:                                              ; preds = %501
  store i64 0, ptr %266, align 8, !tbaa !30
  %506 = getelementptr inbounds nuw i64, ptr %146, i64 %264
  store i64 0, ptr %506, align 8, !tbaa !30
  br label %514

507:                                              ; preds = %501
  %508 = trunc nuw nsw i64 %264 to i32
  tail call fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef %508) #7
  %509 = load i64, ptr %266, align 8, !tbaa !30
  %510 = icmp eq i64 %509, 0
  br i1 %510, label %514, label %511

511:                                              ; preds = %507
  %512 = load double, ptr %270, align 8, !tbaa !42
  %513 = fcmp oeq double %512, 0.000000e+00
  br label %514

514:                                              ; preds = %505, %511, %507
  %515 = phi i1 [ true, %507 ], [ %513, %511 ], [ true, %505 ]
  %516 = and i1 %265, %515
  br label %517

517:                                              ; preds = %514, %269, %262
  %518 = phi i1 [ %265, %269 ], [ %516, %514 ], [ %265, %262 ]
  br i1 %263, label %519, label %523

519:                                              ; preds = %517, %524
  %520 = phi i64 [ 1, %517 ], [ 0, %524 ]
  %521 = phi i1 [ %518, %517 ], [ true, %524 ]
  %522 = xor i1 %263, true
  br label %262, !llvm.loop !54

523:                                              ; preds = %517
  br i1 %518, label %529, label %524

524:                                              ; preds = %4787, %4805, %4802, %3211, %3503, %523
  %525 = load i64, ptr %124, align 8, !tbaa !40
  %526 = load i64, ptr %125, align 8, !tbaa !41
  %527 = sub nsw i64 %525, %526
  %528 = icmp slt i64 %527, 4
  br i1 %528, label %4806, label %519

529:                                              ; preds = %523
  %530 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %531 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %530)
  %532 = icmp eq i64 %531, 0
  br i1 %532, label %4806, label %533

533:                                              ; preds = %529
  %534 = load <2 x i64>, ptr %146, align 16, !tbaa !26
  %535 = and <2 x i64> %534, %530
  %536 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %535)
  %537 = icmp eq i64 %536, 0
  %538 = load i64, ptr %157, align 8, !tbaa !20
  br i1 %537, label %1119, label %539

539:                                              ; preds = %533
  %540 = load <2 x double>, ptr %147, align 16, !tbaa !26
  %541 = load <2 x double>, ptr %148, align 16, !tbaa !26
  %542 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %543 = load <2 x double>, ptr %150, align 16, !tbaa !26
  %544 = fsub <2 x double> %542, %543
  %545 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %541, <2 x double> %544, <2 x double> %540)
  %546 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %547 = fcmp une <2 x double> %546, splat (double 2.000000e+00)
  %548 = select <2 x i1> %547, <2 x double> splat (double 1.000000e+00), <2 x double> splat (double 5.000000e-01)
  %549 = fmul <2 x double> %545, %548
  %550 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %551 = load <2 x double>, ptr %153, align 16, !tbaa !26
  %552 = fcmp olt <2 x double> %550, %551
  %553 = select <2 x i1> %552, <2 x double> %550, <2 x double> %551
  %554 = fcmp olt <2 x double> %553, %549
  %555 = select <2 x i1> %554, <2 x double> %553, <2 x double> %549
  %556 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %557 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %558 = fadd <2 x double> %556, %557
  %559 = fsub <2 x double> %558, %542
  %560 = fmul <2 x double> %555, splat (double 0x3FF000010C6F7A0B)
  %561 = fcmp ole <2 x double> %559, %560
  %562 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %563 = fcmp ogt <2 x double> %562, %555
  %564 = select <2 x i1> %563, <2 x double> %562, <2 x double> %555
  %565 = icmp ne <2 x i64> %535, zeroinitializer
  %566 = select <2 x i1> %561, <2 x i1> %565, <2 x i1> zeroinitializer
  %567 = select <2 x i1> %566, <2 x double> %564, <2 x double> %562
  store <2 x double> %567, ptr %156, align 16, !tbaa !26
  %568 = fmul <2 x double> %555, splat (double 2.000000e+00)
  %569 = fcmp uge <2 x double> %559, %568
  %570 = fmul <2 x double> %559, splat (double 5.000000e-01)
  %571 = select <2 x i1> %569, <2 x double> %555, <2 x double> %570
  %572 = select <2 x i1> %561, <2 x double> %559, <2 x double> %571
  %573 = icmp sgt i64 %538, 0
  %574 = load <2 x double>, ptr %158, align 16, !tbaa !26
  br i1 %573, label %575, label %622

575:                                              ; preds = %539
  %576 = load ptr, ptr %142, align 8, !tbaa !28
  br label %577

577:                                              ; preds = %575, %577
  %578 = phi <2 x double> [ %572, %575 ], [ %619, %577 ]
  %579 = phi i64 [ 0, %575 ], [ %620, %577 ]
  %580 = getelementptr inbounds nuw %struct.Piece, ptr %576, i64 %579
  %581 = getelementptr inbounds nuw i8, ptr %580, i64 944
  %582 = load <2 x double>, ptr %581, align 16, !tbaa !26
  %583 = getelementptr inbounds nuw i8, ptr %580, i64 368
  %584 = load <2 x double>, ptr %583, align 16, !tbaa !26
  %585 = fsub <2 x double> %582, %584
  %586 = getelementptr inbounds nuw i8, ptr %580, i64 208
  %587 = load <2 x double>, ptr %586, align 16, !tbaa !26
  %588 = fmul <2 x double> %585, %587
  %589 = getelementptr inbounds nuw i8, ptr %580, i64 400
  %590 = load <2 x double>, ptr %589, align 16, !tbaa !26
  %591 = getelementptr inbounds nuw i8, ptr %580, i64 1008
  %592 = load <2 x double>, ptr %591, align 16, !tbaa !26
  %593 = fsub <2 x double> %590, %592
  %594 = getelementptr inbounds nuw i8, ptr %580, i64 1840
  %595 = load <2 x i64>, ptr %594, align 16, !tbaa !26
  %596 = getelementptr inbounds nuw i8, ptr %580, i64 1824
  %597 = load <2 x double>, ptr %596, align 16, !tbaa !26
  %598 = fcmp une <2 x double> %597, splat (double 1.000000e+00)
  %599 = select <2 x i1> %598, <2 x double> %588, <2 x double> %593
  %600 = getelementptr inbounds nuw i8, ptr %580, i64 960
  %601 = load <2 x double>, ptr %600, align 16, !tbaa !26
  %602 = icmp eq <2 x i64> %595, zeroinitializer
  %603 = select <2 x i1> %602, <2 x double> %601, <2 x double> %599
  %604 = getelementptr inbounds nuw i8, ptr %580, i64 1408
  %605 = load <2 x double>, ptr %604, align 16, !tbaa !26
  %606 = getelementptr inbounds nuw i8, ptr %580, i64 1792
  %607 = load <2 x double>, ptr %606, align 16, !tbaa !26
  %608 = fdiv <2 x double> %607, %574
  %609 = select <2 x i1> %602, <2 x double> %608, <2 x double> zeroinitializer
  %610 = fsub <2 x double> %605, %609
  %611 = fcmp ule <2 x double> %603, zeroinitializer
  %612 = fcmp ule <2 x double> %610, zeroinitializer
  %613 = or <2 x i1> %611, %612
  %614 = fdiv <2 x double> %603, %610
  %615 = fcmp ogt <2 x double> %614, splat (double 1.000000e-03)
  %616 = select <2 x i1> %615, <2 x double> %614, <2 x double> splat (double 1.000000e-03)
  %617 = fcmp olt <2 x double> %578, %616
  %618 = select <2 x i1> %613, <2 x i1> splat (i1 true), <2 x i1> %617
  %619 = select <2 x i1> %618, <2 x double> %578, <2 x double> %616
  %620 = add nuw nsw i64 %579, 1
  %621 = icmp eq i64 %620, %538
  br i1 %621, label %622, label %577, !llvm.loop !55

622:                                              ; preds = %577, %539
  %623 = phi <2 x double> [ %572, %539 ], [ %619, %577 ]
  %624 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %625 = icmp eq <2 x i64> %535, zeroinitializer
  %626 = select <2 x i1> %625, <2 x double> %624, <2 x double> %623
  store <2 x double> %626, ptr %159, align 16, !tbaa !26
  %627 = load <2 x i64>, ptr %160, align 16, !tbaa !26
  %628 = fdiv <2 x double> %626, %574
  %629 = fdiv <2 x double> splat (double 1.000000e+00), %626
  %630 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %628, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %631 = fadd <2 x double> %628, splat (double 1.000000e+00)
  %632 = fdiv <2 x double> %630, %631
  %633 = fmul <2 x double> %629, %632
  %634 = icmp eq <2 x i64> %627, zeroinitializer
  %635 = select <2 x i1> %634, <2 x double> %633, <2 x double> %629
  %636 = fneg <2 x double> %629
  %637 = fneg <2 x double> %631
  %638 = fmul <2 x double> %629, %637
  %639 = select <2 x i1> %634, <2 x double> %638, <2 x double> %636
  %640 = fmul <2 x double> %628, %628
  %641 = fdiv <2 x double> %640, %631
  %642 = fmul <2 x double> %629, %641
  %643 = select <2 x i1> %634, <2 x double> %642, <2 x double> zeroinitializer
  %644 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %645 = select <2 x i1> %625, <2 x double> %644, <2 x double> %635
  store <2 x double> %645, ptr %161, align 16, !tbaa !26
  %646 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %647 = select <2 x i1> %625, <2 x double> %646, <2 x double> %639
  store <2 x double> %647, ptr %162, align 16, !tbaa !26
  %648 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %649 = select <2 x i1> %625, <2 x double> %648, <2 x double> %643
  store <2 x double> %649, ptr %163, align 16, !tbaa !26
  %650 = select <2 x i1> %634, <2 x double> %628, <2 x double> zeroinitializer
  %651 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %652 = load <2 x double>, ptr %166, align 16, !tbaa !26
  %653 = fsub <2 x double> %651, %652
  %654 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %650, <2 x double> %653, <2 x double> %651)
  %655 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %656 = select <2 x i1> %625, <2 x double> %655, <2 x double> %654
  %657 = load <2 x double>, ptr %233, align 16, !tbaa !26
  %658 = load <2 x double>, ptr %234, align 16, !tbaa !26
  %659 = fsub <2 x double> %657, %658
  %660 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %650, <2 x double> %659, <2 x double> %657)
  %661 = load <2 x double>, ptr %232, align 16, !tbaa !26
  %662 = select <2 x i1> %625, <2 x double> %661, <2 x double> %660
  store <2 x double> %662, ptr %232, align 16, !tbaa !26
  %663 = load <2 x double>, ptr %236, align 16, !tbaa !26
  %664 = load <2 x double>, ptr %237, align 16, !tbaa !26
  %665 = fsub <2 x double> %663, %664
  %666 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %650, <2 x double> %665, <2 x double> %663)
  %667 = load <2 x double>, ptr %235, align 16, !tbaa !26
  %668 = select <2 x i1> %625, <2 x double> %667, <2 x double> %666
  store <2 x double> %668, ptr %235, align 16, !tbaa !26
  %669 = load <2 x double>, ptr %239, align 16, !tbaa !26
  %670 = load <2 x double>, ptr %240, align 16, !tbaa !26
  %671 = fsub <2 x double> %669, %670
  %672 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %650, <2 x double> %671, <2 x double> %669)
  %673 = load <2 x double>, ptr %238, align 16, !tbaa !26
  %674 = select <2 x i1> %625, <2 x double> %673, <2 x double> %672
  store <2 x double> %674, ptr %238, align 16, !tbaa !26
  %675 = load <2 x double>, ptr %242, align 16, !tbaa !26
  %676 = load <2 x double>, ptr %243, align 16, !tbaa !26
  %677 = fsub <2 x double> %675, %676
  %678 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %650, <2 x double> %677, <2 x double> %675)
  %679 = load <2 x double>, ptr %241, align 16, !tbaa !26
  %680 = select <2 x i1> %625, <2 x double> %679, <2 x double> %678
  store <2 x double> %680, ptr %241, align 16, !tbaa !26
  %681 = load <2 x double>, ptr %245, align 16, !tbaa !26
  %682 = load <2 x double>, ptr %246, align 16, !tbaa !26
  %683 = fsub <2 x double> %681, %682
  %684 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %650, <2 x double> %683, <2 x double> %681)
  %685 = load <2 x double>, ptr %244, align 16, !tbaa !26
  %686 = select <2 x i1> %625, <2 x double> %685, <2 x double> %684
  store <2 x double> %686, ptr %244, align 16, !tbaa !26
  %687 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %688 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %689 = icmp eq <2 x i64> %687, zeroinitializer
  %690 = select <2 x i1> %689, <2 x double> zeroinitializer, <2 x double> %688
  %691 = load <2 x double>, ptr %169, align 16, !tbaa !26
  %692 = fsub <2 x double> %690, %691
  %693 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %694 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %695 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %696 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %695, <2 x double> %651, <2 x double> %694)
  %697 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %698 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %693, <2 x double> %696, <2 x double> %697)
  %699 = fdiv <2 x double> %692, %698
  %700 = and <2 x i64> %627, %535
  %701 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %702 = fcmp une <2 x double> %701, zeroinitializer
  %703 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %704 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %703, <2 x double> %699, <2 x double> %651)
  %705 = icmp eq <2 x i64> %700, zeroinitializer
  %706 = select <2 x i1> %702, <2 x i1> splat (i1 true), <2 x i1> %705
  %707 = select <2 x i1> %706, <2 x double> %656, <2 x double> %704
  store <2 x double> %707, ptr %164, align 16, !tbaa !26
  %708 = load i64, ptr %157, align 8, !tbaa !20
  %709 = icmp sgt i64 %708, 0
  br i1 %709, label %710, label %1106

710:                                              ; preds = %622, %1102
  %711 = phi i64 [ %1103, %1102 ], [ 0, %622 ]
  %712 = load ptr, ptr %142, align 8, !tbaa !28
  %713 = getelementptr inbounds nuw %struct.Piece, ptr %712, i64 %711
  %714 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %715 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %716 = getelementptr inbounds nuw i8, ptr %713, i64 1856
  %717 = load <2 x i64>, ptr %716, align 16, !tbaa !26
  %718 = fdiv <2 x double> %714, %715
  %719 = fdiv <2 x double> splat (double 1.000000e+00), %714
  %720 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %718, <2 x double> splat (double 2.000000e+00), <2 x double> splat (double 1.000000e+00))
  %721 = fadd <2 x double> %718, splat (double 1.000000e+00)
  %722 = fdiv <2 x double> %720, %721
  %723 = fmul <2 x double> %719, %722
  %724 = icmp eq <2 x i64> %717, zeroinitializer
  %725 = select <2 x i1> %724, <2 x double> %723, <2 x double> %719
  %726 = fneg <2 x double> %719
  %727 = fneg <2 x double> %721
  %728 = fmul <2 x double> %719, %727
  %729 = select <2 x i1> %724, <2 x double> %728, <2 x double> %726
  %730 = fmul <2 x double> %718, %718
  %731 = fdiv <2 x double> %730, %721
  %732 = fmul <2 x double> %719, %731
  %733 = select <2 x i1> %724, <2 x double> %732, <2 x double> zeroinitializer
  %734 = getelementptr inbounds nuw i8, ptr %713, i64 1312
  %735 = load <2 x double>, ptr %734, align 16, !tbaa !26
  %736 = select <2 x i1> %625, <2 x double> %735, <2 x double> %725
  store <2 x double> %736, ptr %734, align 16, !tbaa !26
  %737 = getelementptr inbounds nuw i8, ptr %713, i64 1328
  %738 = load <2 x double>, ptr %737, align 16, !tbaa !26
  %739 = select <2 x i1> %625, <2 x double> %738, <2 x double> %729
  store <2 x double> %739, ptr %737, align 16, !tbaa !26
  %740 = getelementptr inbounds nuw i8, ptr %713, i64 1344
  %741 = load <2 x double>, ptr %740, align 16, !tbaa !26
  %742 = select <2 x i1> %625, <2 x double> %741, <2 x double> %733
  store <2 x double> %742, ptr %740, align 16, !tbaa !26
  %743 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %744 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %745 = fdiv <2 x double> %743, %744
  %746 = select <2 x i1> %724, <2 x double> %745, <2 x double> zeroinitializer
  %747 = getelementptr inbounds nuw i8, ptr %713, i64 736
  %748 = getelementptr inbounds nuw i8, ptr %713, i64 928
  %749 = getelementptr inbounds nuw i8, ptr %713, i64 1120
  %750 = load <2 x double>, ptr %748, align 16, !tbaa !26
  %751 = load <2 x double>, ptr %749, align 16, !tbaa !26
  %752 = fsub <2 x double> %750, %751
  %753 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %752, <2 x double> %750)
  %754 = load <2 x double>, ptr %747, align 16, !tbaa !26
  %755 = select <2 x i1> %625, <2 x double> %754, <2 x double> %753
  store <2 x double> %755, ptr %747, align 16, !tbaa !26
  %756 = getelementptr inbounds nuw i8, ptr %713, i64 752
  %757 = getelementptr inbounds nuw i8, ptr %713, i64 944
  %758 = load <2 x double>, ptr %757, align 16, !tbaa !26
  %759 = getelementptr inbounds nuw i8, ptr %713, i64 1136
  %760 = load <2 x double>, ptr %759, align 16, !tbaa !26
  %761 = fsub <2 x double> %758, %760
  %762 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %761, <2 x double> %758)
  %763 = load <2 x double>, ptr %756, align 16, !tbaa !26
  %764 = select <2 x i1> %625, <2 x double> %763, <2 x double> %762
  store <2 x double> %764, ptr %756, align 16, !tbaa !26
  %765 = getelementptr inbounds nuw i8, ptr %713, i64 768
  %766 = getelementptr inbounds nuw i8, ptr %713, i64 960
  %767 = load <2 x double>, ptr %766, align 16, !tbaa !26
  %768 = getelementptr inbounds nuw i8, ptr %713, i64 1152
  %769 = load <2 x double>, ptr %768, align 16, !tbaa !26
  %770 = fsub <2 x double> %767, %769
  %771 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %770, <2 x double> %767)
  %772 = load <2 x double>, ptr %765, align 16, !tbaa !26
  %773 = select <2 x i1> %625, <2 x double> %772, <2 x double> %771
  store <2 x double> %773, ptr %765, align 16, !tbaa !26
  %774 = getelementptr inbounds nuw i8, ptr %713, i64 784
  %775 = getelementptr inbounds nuw i8, ptr %713, i64 976
  %776 = load <2 x double>, ptr %775, align 16, !tbaa !26
  %777 = getelementptr inbounds nuw i8, ptr %713, i64 1168
  %778 = load <2 x double>, ptr %777, align 16, !tbaa !26
  %779 = fsub <2 x double> %776, %778
  %780 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %779, <2 x double> %776)
  %781 = load <2 x double>, ptr %774, align 16, !tbaa !26
  %782 = select <2 x i1> %625, <2 x double> %781, <2 x double> %780
  store <2 x double> %782, ptr %774, align 16, !tbaa !26
  %783 = getelementptr inbounds nuw i8, ptr %713, i64 800
  %784 = getelementptr inbounds nuw i8, ptr %713, i64 992
  %785 = load <2 x double>, ptr %784, align 16, !tbaa !26
  %786 = getelementptr inbounds nuw i8, ptr %713, i64 1184
  %787 = load <2 x double>, ptr %786, align 16, !tbaa !26
  %788 = fsub <2 x double> %785, %787
  %789 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %788, <2 x double> %785)
  %790 = load <2 x double>, ptr %783, align 16, !tbaa !26
  %791 = select <2 x i1> %625, <2 x double> %790, <2 x double> %789
  store <2 x double> %791, ptr %783, align 16, !tbaa !26
  %792 = getelementptr inbounds nuw i8, ptr %713, i64 816
  %793 = getelementptr inbounds nuw i8, ptr %713, i64 1008
  %794 = load <2 x double>, ptr %793, align 16, !tbaa !26
  %795 = getelementptr inbounds nuw i8, ptr %713, i64 1200
  %796 = load <2 x double>, ptr %795, align 16, !tbaa !26
  %797 = fsub <2 x double> %794, %796
  %798 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %797, <2 x double> %794)
  %799 = load <2 x double>, ptr %792, align 16, !tbaa !26
  %800 = select <2 x i1> %625, <2 x double> %799, <2 x double> %798
  store <2 x double> %800, ptr %792, align 16, !tbaa !26
  %801 = getelementptr inbounds nuw i8, ptr %713, i64 832
  %802 = getelementptr inbounds nuw i8, ptr %713, i64 1024
  %803 = load <2 x double>, ptr %802, align 16, !tbaa !26
  %804 = getelementptr inbounds nuw i8, ptr %713, i64 1216
  %805 = load <2 x double>, ptr %804, align 16, !tbaa !26
  %806 = fsub <2 x double> %803, %805
  %807 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %806, <2 x double> %803)
  %808 = load <2 x double>, ptr %801, align 16, !tbaa !26
  %809 = select <2 x i1> %625, <2 x double> %808, <2 x double> %807
  store <2 x double> %809, ptr %801, align 16, !tbaa !26
  %810 = getelementptr inbounds nuw i8, ptr %713, i64 848
  %811 = getelementptr inbounds nuw i8, ptr %713, i64 1040
  %812 = load <2 x double>, ptr %811, align 16, !tbaa !26
  %813 = getelementptr inbounds nuw i8, ptr %713, i64 1232
  %814 = load <2 x double>, ptr %813, align 16, !tbaa !26
  %815 = fsub <2 x double> %812, %814
  %816 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %815, <2 x double> %812)
  %817 = load <2 x double>, ptr %810, align 16, !tbaa !26
  %818 = select <2 x i1> %625, <2 x double> %817, <2 x double> %816
  store <2 x double> %818, ptr %810, align 16, !tbaa !26
  %819 = getelementptr inbounds nuw i8, ptr %713, i64 864
  %820 = getelementptr inbounds nuw i8, ptr %713, i64 1056
  %821 = load <2 x double>, ptr %820, align 16, !tbaa !26
  %822 = getelementptr inbounds nuw i8, ptr %713, i64 1248
  %823 = load <2 x double>, ptr %822, align 16, !tbaa !26
  %824 = fsub <2 x double> %821, %823
  %825 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %824, <2 x double> %821)
  %826 = load <2 x double>, ptr %819, align 16, !tbaa !26
  %827 = select <2 x i1> %625, <2 x double> %826, <2 x double> %825
  store <2 x double> %827, ptr %819, align 16, !tbaa !26
  %828 = getelementptr inbounds nuw i8, ptr %713, i64 880
  %829 = getelementptr inbounds nuw i8, ptr %713, i64 1072
  %830 = load <2 x double>, ptr %829, align 16, !tbaa !26
  %831 = getelementptr inbounds nuw i8, ptr %713, i64 1264
  %832 = load <2 x double>, ptr %831, align 16, !tbaa !26
  %833 = fsub <2 x double> %830, %832
  %834 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %833, <2 x double> %830)
  %835 = load <2 x double>, ptr %828, align 16, !tbaa !26
  %836 = select <2 x i1> %625, <2 x double> %835, <2 x double> %834
  store <2 x double> %836, ptr %828, align 16, !tbaa !26
  %837 = getelementptr inbounds nuw i8, ptr %713, i64 896
  %838 = getelementptr inbounds nuw i8, ptr %713, i64 1088
  %839 = load <2 x double>, ptr %838, align 16, !tbaa !26
  %840 = getelementptr inbounds nuw i8, ptr %713, i64 1280
  %841 = load <2 x double>, ptr %840, align 16, !tbaa !26
  %842 = fsub <2 x double> %839, %841
  %843 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %842, <2 x double> %839)
  %844 = load <2 x double>, ptr %837, align 16, !tbaa !26
  %845 = select <2 x i1> %625, <2 x double> %844, <2 x double> %843
  store <2 x double> %845, ptr %837, align 16, !tbaa !26
  %846 = load <2 x double>, ptr %747, align 16, !tbaa !26
  %847 = load <2 x double>, ptr %748, align 16, !tbaa !26
  %848 = fcmp olt <2 x double> %846, %847
  %849 = select <2 x i1> %848, <2 x double> %846, <2 x double> %847
  %850 = load <2 x double>, ptr %713, align 16, !tbaa !26
  %851 = fmul <2 x double> %850, splat (double 3.000000e-01)
  %852 = fcmp ogt <2 x double> %849, %851
  %853 = select <2 x i1> %852, <2 x double> %849, <2 x double> %851
  %854 = select <2 x i1> %625, <2 x double> %846, <2 x double> %853
  store <2 x double> %854, ptr %747, align 16, !tbaa !26
  %855 = getelementptr inbounds nuw i8, ptr %713, i64 1408
  %856 = fcmp ogt <2 x double> %827, zeroinitializer
  %857 = select <2 x i1> %856, <2 x double> %827, <2 x double> zeroinitializer
  %858 = load <2 x double>, ptr %855, align 16, !tbaa !26
  %859 = select <2 x i1> %625, <2 x double> %858, <2 x double> %857
  store <2 x double> %859, ptr %855, align 16, !tbaa !26
  %860 = getelementptr inbounds nuw i8, ptr %713, i64 96
  %861 = load <2 x double>, ptr %860, align 16, !tbaa !26
  %862 = getelementptr inbounds nuw i8, ptr %713, i64 112
  %863 = load <2 x double>, ptr %862, align 16, !tbaa !26
  %864 = getelementptr inbounds nuw i8, ptr %713, i64 128
  %865 = load <2 x double>, ptr %864, align 16, !tbaa !26
  %866 = getelementptr inbounds nuw i8, ptr %713, i64 160
  %867 = load <2 x double>, ptr %866, align 16, !tbaa !26
  %868 = getelementptr inbounds nuw i8, ptr %713, i64 192
  %869 = load <2 x double>, ptr %868, align 16, !tbaa !26
  %870 = getelementptr inbounds nuw i8, ptr %713, i64 208
  %871 = getelementptr inbounds nuw i8, ptr %713, i64 384
  %872 = load <2 x double>, ptr %871, align 16, !tbaa !26
  %873 = getelementptr inbounds nuw i8, ptr %713, i64 1104
  %874 = load <2 x double>, ptr %873, align 16, !tbaa !26
  %875 = fsub <2 x double> %874, %872
  %876 = getelementptr inbounds nuw i8, ptr %713, i64 1296
  %877 = load <2 x double>, ptr %876, align 16, !tbaa !26
  %878 = fsub <2 x double> %877, %872
  %879 = load <2 x double>, ptr %737, align 16, !tbaa !26
  %880 = load <2 x double>, ptr %740, align 16, !tbaa !26
  %881 = fmul <2 x double> %875, %879
  %882 = fmul <2 x double> %878, %880
  %883 = fmul <2 x double> %872, %879
  %884 = fmul <2 x double> %867, %883
  %885 = fmul <2 x double> %872, %880
  %886 = fmul <2 x double> %867, %885
  %887 = getelementptr inbounds nuw i8, ptr %713, i64 1904
  %888 = load ptr, ptr %887, align 16, !tbaa !46
  %889 = getelementptr inbounds nuw i8, ptr %713, i64 1912
  %890 = load ptr, ptr %889, align 8, !tbaa !56
  %891 = getelementptr inbounds nuw i8, ptr %713, i64 1992
  %892 = load ptr, ptr %891, align 8, !tbaa !48
  %893 = getelementptr inbounds nuw i8, ptr %713, i64 1896
  %894 = load ptr, ptr %893, align 8, !tbaa !57
  %895 = getelementptr inbounds nuw i8, ptr %713, i64 1920
  %896 = load ptr, ptr %895, align 16, !tbaa !58
  %897 = load i64, ptr %132, align 16, !tbaa !21
  %898 = icmp sgt i64 %897, 0
  br i1 %898, label %899, label %901

899:                                              ; preds = %710
  %900 = getelementptr inbounds nuw i8, ptr %713, i64 1888
  br label %914

901:                                              ; preds = %945, %710
  %902 = fmul <2 x double> %869, %879
  %903 = fmul <2 x double> %869, %880
  %904 = getelementptr inbounds nuw i8, ptr %713, i64 2072
  %905 = load ptr, ptr %904, align 8, !tbaa !49
  %906 = getelementptr inbounds nuw i8, ptr %713, i64 2080
  %907 = load ptr, ptr %906, align 16, !tbaa !59
  %908 = load i64, ptr %133, align 8, !tbaa !22
  %909 = icmp sgt i64 %908, 0
  br i1 %909, label %910, label %979

910:                                              ; preds = %901
  %911 = getelementptr inbounds nuw i8, ptr %713, i64 2024
  %912 = getelementptr inbounds nuw i8, ptr %713, i64 2032
  %913 = getelementptr inbounds nuw i8, ptr %713, i64 2040
  br label %952

914:                                              ; preds = %899, %945
  %915 = phi i64 [ 0, %899 ], [ %949, %945 ]
  %916 = getelementptr inbounds nuw <2 x double>, ptr %888, i64 %915
  %917 = load <2 x double>, ptr %916, align 16, !tbaa !26
  %918 = getelementptr inbounds nuw <2 x double>, ptr %890, i64 %915
  %919 = load <2 x double>, ptr %918, align 16, !tbaa !26
  %920 = fsub <2 x double> %917, %919
  %921 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %746, <2 x double> %920, <2 x double> %917)
  %922 = getelementptr inbounds nuw <2 x double>, ptr %894, i64 %915
  %923 = load <2 x double>, ptr %922, align 16, !tbaa !26
  %924 = select <2 x i1> %625, <2 x double> %923, <2 x double> %921
  store <2 x double> %924, ptr %922, align 16, !tbaa !26
  %925 = load i64, ptr %900, align 16, !tbaa !31
  %926 = icmp slt i64 %915, %925
  %927 = getelementptr inbounds nuw <2 x double>, ptr %892, i64 %915
  %928 = load <2 x double>, ptr %927, align 16, !tbaa !26
  br i1 %926, label %929, label %932

929:                                              ; preds = %914
  %930 = fmul <2 x double> %886, %919
  %931 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %884, <2 x double> %917, <2 x double> %930)
  br label %945

932:                                              ; preds = %914
  %933 = fmul <2 x double> %865, %917
  %934 = fmul <2 x double> %933, splat (double 0x3FD5555555555555)
  %935 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %863, <2 x double> splat (double 5.000000e-01), <2 x double> %934)
  %936 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %917, <2 x double> %935, <2 x double> %861)
  %937 = fmul <2 x double> %917, %936
  %938 = fmul <2 x double> %865, %919
  %939 = fmul <2 x double> %938, splat (double 0x3FD5555555555555)
  %940 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %863, <2 x double> splat (double 5.000000e-01), <2 x double> %939)
  %941 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %919, <2 x double> %940, <2 x double> %861)
  %942 = fmul <2 x double> %919, %941
  %943 = fmul <2 x double> %882, %942
  %944 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %881, <2 x double> %937, <2 x double> %943)
  br label %945

945:                                              ; preds = %932, %929
  %946 = phi <2 x double> [ %944, %932 ], [ %931, %929 ]
  %947 = fmul <2 x double> %946, %928
  %948 = getelementptr inbounds nuw <2 x double>, ptr %896, i64 %915
  store <2 x double> %947, ptr %948, align 16, !tbaa !26
  %949 = add nuw nsw i64 %915, 1
  %950 = load i64, ptr %132, align 16, !tbaa !21
  %951 = icmp slt i64 %949, %950
  br i1 %951, label %914, label %901, !llvm.loop !60

952:                                              ; preds = %910, %952
  %953 = phi i64 [ 0, %910 ], [ %954, %952 ]
  %954 = add nuw nsw i64 %953, 1
  %955 = getelementptr inbounds nuw <2 x double>, ptr %905, i64 %954
  %956 = load <2 x double>, ptr %955, align 16, !tbaa !26
  %957 = getelementptr inbounds nuw <2 x double>, ptr %905, i64 %953
  %958 = load <2 x double>, ptr %957, align 16, !tbaa !26
  %959 = fsub <2 x double> %956, %958
  %960 = load ptr, ptr %911, align 8, !tbaa !50
  %961 = getelementptr inbounds nuw <2 x double>, ptr %960, i64 %953
  %962 = load <2 x double>, ptr %961, align 16, !tbaa !26
  %963 = fmul <2 x double> %959, %962
  %964 = getelementptr inbounds nuw <2 x double>, ptr %907, i64 %954
  %965 = load <2 x double>, ptr %964, align 16, !tbaa !26
  %966 = getelementptr inbounds nuw <2 x double>, ptr %907, i64 %953
  %967 = load <2 x double>, ptr %966, align 16, !tbaa !26
  %968 = fsub <2 x double> %965, %967
  %969 = load ptr, ptr %912, align 16, !tbaa !61
  %970 = getelementptr inbounds nuw <2 x double>, ptr %969, i64 %953
  %971 = load <2 x double>, ptr %970, align 16, !tbaa !26
  %972 = fmul <2 x double> %968, %971
  %973 = fmul <2 x double> %903, %972
  %974 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %902, <2 x double> %963, <2 x double> %973)
  %975 = load ptr, ptr %913, align 8, !tbaa !62
  %976 = getelementptr inbounds nuw <2 x double>, ptr %975, i64 %953
  store <2 x double> %974, ptr %976, align 16, !tbaa !26
  %977 = load i64, ptr %133, align 8, !tbaa !22
  %978 = icmp slt i64 %954, %977
  br i1 %978, label %952, label %979, !llvm.loop !63

979:                                              ; preds = %952, %901
  %980 = getelementptr inbounds nuw i8, ptr %713, i64 416
  %981 = load <2 x double>, ptr %980, align 16, !tbaa !26
  %982 = fcmp ogt <2 x double> %981, zeroinitializer
  %983 = bitcast <2 x i1> %982 to i2
  %984 = icmp eq i2 %983, 0
  br i1 %984, label %985, label %989

985:                                              ; preds = %979
  %986 = getelementptr inbounds nuw i8, ptr %713, i64 1792
  %987 = load <2 x double>, ptr %986, align 16, !tbaa !26
  %988 = select <2 x i1> %625, <2 x double> %987, <2 x double> zeroinitializer
  store <2 x double> %988, ptr %986, align 16, !tbaa !26
  br label %1102

989:                                              ; preds = %979
  %990 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %991 = fneg <2 x double> %990
  %992 = getelementptr inbounds nuw i8, ptr %713, i64 432
  %993 = load <2 x double>, ptr %992, align 16, !tbaa !26
  %994 = fdiv <2 x double> %991, %993
  %995 = fcmp ogt <2 x double> %994, splat (double -7.000000e+02)
  %996 = select <2 x i1> %995, <2 x double> %994, <2 x double> splat (double -7.000000e+02)
  %997 = fcmp olt <2 x double> %996, splat (double 7.000000e+02)
  %998 = select <2 x i1> %997, <2 x double> %996, <2 x double> splat (double 7.000000e+02)
  %999 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %998, <2 x double> splat (double 0x3FF71547652B82FE), <2 x double> splat (double 0x4338000000000000))
  %1000 = fadd <2 x double> %999, splat (double 0xC338000000000000)
  %1001 = fneg <2 x double> %1000
  %1002 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> splat (double 0x3FE62E42FEFA39EF), <2 x double> %998)
  %1003 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1001, <2 x double> splat (double 0x3C7ABC9E3B39803F), <2 x double> %1002)
  %1004 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1003, <2 x double> splat (double 0x3DE6124613A86D09), <2 x double> splat (double 0x3E21EED8EFF8D898))
  %1005 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1004, <2 x double> %1003, <2 x double> splat (double 0x3E5AE64567F544E4))
  %1006 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1005, <2 x double> %1003, <2 x double> splat (double 0x3E927E4FB7789F5C))
  %1007 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1006, <2 x double> %1003, <2 x double> splat (double 0x3EC71DE3A556C734))
  %1008 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1007, <2 x double> %1003, <2 x double> splat (double 0x3EFA01A01A01A01A))
  %1009 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1008, <2 x double> %1003, <2 x double> splat (double 0x3F2A01A01A01A01A))
  %1010 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1009, <2 x double> %1003, <2 x double> splat (double 0x3F56C16C16C16C17))
  %1011 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1010, <2 x double> %1003, <2 x double> splat (double 0x3F81111111111111))
  %1012 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1011, <2 x double> %1003, <2 x double> splat (double 0x3FA5555555555555))
  %1013 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1012, <2 x double> %1003, <2 x double> splat (double 0x3FC5555555555555))
  %1014 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1013, <2 x double> %1003, <2 x double> splat (double 5.000000e-01))
  %1015 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1014, <2 x double> %1003, <2 x double> splat (double 1.000000e+00))
  %1016 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1015, <2 x double> %1003, <2 x double> splat (double 1.000000e+00))
  %1017 = bitcast <2 x double> %999 to <2 x i64>
  %1018 = shl <2 x i64> %1017, splat (i64 52)
  %1019 = bitcast <2 x double> %1016 to <2 x i64>
  %1020 = add <2 x i64> %1018, %1019
  %1021 = bitcast <2 x i64> %1020 to <2 x double>
  %1022 = fsub <2 x double> splat (double 1.000000e+00), %1021
  %1023 = load <2 x double>, ptr %873, align 16, !tbaa !26
  %1024 = getelementptr inbounds nuw i8, ptr %713, i64 1888
  %1025 = load i64, ptr %1024, align 16, !tbaa !31
  %1026 = load i64, ptr %132, align 16, !tbaa !21
  %1027 = icmp slt i64 %1025, %1026
  br i1 %1027, label %1028, label %1033

1028:                                             ; preds = %989
  %1029 = getelementptr inbounds nuw i8, ptr %713, i64 448
  %1030 = getelementptr inbounds nuw i8, ptr %713, i64 464
  %1031 = getelementptr inbounds nuw i8, ptr %713, i64 1936
  %1032 = getelementptr inbounds nuw i8, ptr %713, i64 1928
  br label %1045

1033:                                             ; preds = %1045, %989
  %1034 = phi <2 x double> [ zeroinitializer, %989 ], [ %1083, %1045 ]
  %1035 = phi <2 x double> [ zeroinitializer, %989 ], [ %1098, %1045 ]
  %1036 = getelementptr inbounds nuw i8, ptr %713, i64 944
  %1037 = load <2 x double>, ptr %1036, align 16, !tbaa !26
  %1038 = fsub <2 x double> %1037, %1023
  %1039 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1034, <2 x double> %1038, <2 x double> %1035)
  %1040 = getelementptr inbounds nuw i8, ptr %713, i64 1792
  %1041 = load <2 x double>, ptr %870, align 16, !tbaa !26
  %1042 = fmul <2 x double> %1041, %1039
  %1043 = load <2 x double>, ptr %1040, align 16, !tbaa !26
  %1044 = select <2 x i1> %625, <2 x double> %1043, <2 x double> %1042
  store <2 x double> %1044, ptr %1040, align 16, !tbaa !26
  br label %1102

1045:                                             ; preds = %1028, %1045
  %1046 = phi <2 x double> [ zeroinitializer, %1028 ], [ %1098, %1045 ]
  %1047 = phi i64 [ %1025, %1028 ], [ %1099, %1045 ]
  %1048 = load ptr, ptr %887, align 16, !tbaa !46
  %1049 = getelementptr inbounds <2 x double>, ptr %1048, i64 %1047
  %1050 = load <2 x double>, ptr %1049, align 16, !tbaa !26
  %1051 = load ptr, ptr %893, align 8, !tbaa !57
  %1052 = getelementptr inbounds <2 x double>, ptr %1051, i64 %1047
  %1053 = load <2 x double>, ptr %1052, align 16, !tbaa !26
  %1054 = fadd <2 x double> %1050, %1053
  %1055 = load <2 x double>, ptr %1029, align 16, !tbaa !26
  %1056 = fneg <2 x double> %1055
  %1057 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1054, <2 x double> splat (double 5.000000e-01), <2 x double> %1056)
  %1058 = load <2 x double>, ptr %1030, align 16, !tbaa !26
  %1059 = fmul <2 x double> %1057, %1058
  %1060 = fcmp ogt <2 x double> %1059, splat (double -5.000000e+00)
  %1061 = select <2 x i1> %1060, <2 x double> %1059, <2 x double> splat (double -5.000000e+00)
  %1062 = fcmp olt <2 x double> %1061, splat (double 5.000000e+00)
  %1063 = select <2 x i1> %1062, <2 x double> %1061, <2 x double> splat (double 5.000000e+00)
  %1064 = fmul <2 x double> %1063, %1063
  %1065 = fadd <2 x double> %1064, splat (double 3.780000e+02)
  %1066 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1064, <2 x double> %1065, <2 x double> splat (double 1.732500e+04))
  %1067 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1064, <2 x double> %1066, <2 x double> splat (double 1.351350e+05))
  %1068 = fmul <2 x double> %1063, %1067
  %1069 = load <2 x double>, ptr %980, align 16, !tbaa !26
  %1070 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1064, <2 x double> splat (double 2.800000e+01), <2 x double> splat (double 3.150000e+03))
  %1071 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1064, <2 x double> %1070, <2 x double> splat (double 6.237000e+04))
  %1072 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1064, <2 x double> %1071, <2 x double> splat (double 1.351350e+05))
  %1073 = fdiv <2 x double> %1068, %1072
  %1074 = fadd <2 x double> %1073, splat (double 1.000000e+00)
  %1075 = fmul <2 x double> %1069, %1074
  %1076 = load ptr, ptr %1031, align 16, !tbaa !47
  %1077 = getelementptr inbounds <2 x double>, ptr %1076, i64 %1047
  %1078 = load <2 x double>, ptr %1077, align 16, !tbaa !26
  %1079 = fadd <2 x double> %1078, splat (double -1.000000e+00)
  %1080 = fadd <2 x double> %1079, %1075
  %1081 = fcmp ogt <2 x double> %1080, zeroinitializer
  %1082 = select <2 x i1> %1081, <2 x double> %1080, <2 x double> zeroinitializer
  %1083 = fmul <2 x double> %1022, %1082
  %1084 = load ptr, ptr %1032, align 8, !tbaa !64
  %1085 = getelementptr inbounds <2 x double>, ptr %1084, i64 %1047
  %1086 = fsub <2 x double> %1078, %1083
  %1087 = load <2 x double>, ptr %1085, align 16, !tbaa !26
  %1088 = select <2 x i1> %625, <2 x double> %1087, <2 x double> %1086
  store <2 x double> %1088, ptr %1085, align 16, !tbaa !26
  %1089 = load ptr, ptr %891, align 8, !tbaa !48
  %1090 = getelementptr inbounds <2 x double>, ptr %1089, i64 %1047
  %1091 = load <2 x double>, ptr %1090, align 16, !tbaa !26
  %1092 = load i64, ptr %1024, align 16, !tbaa !31
  %1093 = icmp slt i64 %1047, %1092
  %1094 = load <2 x double>, ptr %871, align 16
  %1095 = fsub <2 x double> %1023, %1094
  %1096 = select i1 %1093, <2 x double> %1094, <2 x double> %1095
  %1097 = fmul <2 x double> %1091, %1096
  %1098 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1083, <2 x double> %1097, <2 x double> %1046)
  %1099 = add nsw i64 %1047, 1
  %1100 = load i64, ptr %132, align 16, !tbaa !21
  %1101 = icmp slt i64 %1099, %1100
  br i1 %1101, label %1045, label %1033, !llvm.loop !65

1102:                                             ; preds = %985, %1033
  %1103 = add nuw nsw i64 %711, 1
  %1104 = load i64, ptr %157, align 8, !tbaa !20
  %1105 = icmp slt i64 %1103, %1104
  br i1 %1105, label %710, label %1106, !llvm.loop !66

1106:                                             ; preds = %1102, %622
  %1107 = phi i64 [ %708, %622 ], [ %1104, %1102 ]
  %1108 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %1109 = fcmp ogt <2 x double> %1108, zeroinitializer
  %1110 = select <2 x i1> %1109, <2 x i64> %535, <2 x i64> zeroinitializer
  %1111 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1110)
  %1112 = icmp eq i64 %1111, 0
  br i1 %1112, label %1119, label %1113

1113:                                             ; preds = %1106
  %1114 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0, <2 x i64> noundef %1110) #7
  %1115 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %1116 = icmp eq <2 x i64> %1110, zeroinitializer
  %1117 = select <2 x i1> %1116, <2 x double> %1115, <2 x double> %1114
  store <2 x double> %1117, ptr %164, align 16, !tbaa !26
  %1118 = load i64, ptr %157, align 8, !tbaa !20
  br label %1119

1119:                                             ; preds = %1106, %1113, %533
  %1120 = phi i64 [ %1107, %1106 ], [ %1118, %1113 ], [ %538, %533 ]
  %1121 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %1122 = icmp eq <2 x i64> %535, zeroinitializer
  %1123 = select <2 x i1> %1122, <2 x double> %1121, <2 x double> zeroinitializer
  store <2 x double> %1123, ptr %175, align 16, !tbaa !26
  %1124 = icmp sgt i64 %1120, 0
  br i1 %1124, label %1130, label %1125

1125:                                             ; preds = %1119
  %1126 = load <2 x double>, ptr %179, align 16, !tbaa !26
  br label %1826

1127:                                             ; preds = %1820
  %1128 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %1129 = icmp sgt i64 %1824, 0
  br i1 %1129, label %1831, label %1826

1130:                                             ; preds = %1119, %1820
  %1131 = phi i64 [ %1823, %1820 ], [ 0, %1119 ]
  %1132 = load ptr, ptr %142, align 8, !tbaa !28
  %1133 = getelementptr inbounds nuw %struct.Piece, ptr %1132, i64 %1131
  %1134 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %1135 = getelementptr inbounds nuw i8, ptr %1133, i64 1600
  %1136 = load <2 x double>, ptr %1135, align 16, !tbaa !26
  %1137 = fsub <2 x double> %1134, %1136
  %1138 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1137)
  %1139 = getelementptr inbounds nuw i8, ptr %1133, i64 544
  %1140 = load <2 x double>, ptr %1139, align 16, !tbaa !26
  %1141 = fcmp ogt <2 x double> %1140, splat (double 1.000000e-09)
  %1142 = select <2 x i1> %1141, <2 x double> %1140, <2 x double> splat (double 1.000000e-09)
  %1143 = fdiv <2 x double> %1138, %1142
  %1144 = getelementptr inbounds nuw i8, ptr %1133, i64 256
  %1145 = load <2 x double>, ptr %1144, align 16, !tbaa !26
  %1146 = fcmp ule <2 x double> %1140, zeroinitializer
  %1147 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1143)
  %1148 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1147)
  %1149 = select <2 x i1> %1146, <2 x double> splat (double 1.000000e+00), <2 x double> %1148
  %1150 = fmul <2 x double> %1145, %1149
  %1151 = getelementptr inbounds nuw i8, ptr %1133, i64 272
  %1152 = load <2 x double>, ptr %1151, align 16, !tbaa !26
  %1153 = getelementptr inbounds nuw i8, ptr %1133, i64 1408
  %1154 = load <2 x double>, ptr %1153, align 16, !tbaa !26
  %1155 = getelementptr inbounds nuw i8, ptr %1133, i64 1424
  %1156 = load <2 x double>, ptr %1155, align 16, !tbaa !26
  %1157 = fadd <2 x double> %1154, %1156
  %1158 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1152, <2 x double> %1157, <2 x double> %1150)
  %1159 = getelementptr inbounds nuw i8, ptr %1133, i64 288
  %1160 = load <2 x double>, ptr %1159, align 16, !tbaa !26
  %1161 = fcmp olt <2 x double> %1158, %1160
  %1162 = select <2 x i1> %1161, <2 x double> %1158, <2 x double> %1160
  %1163 = getelementptr inbounds nuw i8, ptr %1133, i64 1328
  %1164 = load <2 x double>, ptr %1163, align 16, !tbaa !26
  %1165 = getelementptr inbounds nuw i8, ptr %1133, i64 992
  %1166 = load <2 x double>, ptr %1165, align 16, !tbaa !26
  %1167 = getelementptr inbounds nuw i8, ptr %1133, i64 1344
  %1168 = load <2 x double>, ptr %1167, align 16, !tbaa !26
  %1169 = getelementptr inbounds nuw i8, ptr %1133, i64 1184
  %1170 = load <2 x double>, ptr %1169, align 16, !tbaa !26
  %1171 = fmul <2 x double> %1168, %1170
  %1172 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1164, <2 x double> %1166, <2 x double> %1171)
  %1173 = getelementptr inbounds nuw i8, ptr %1133, i64 304
  %1174 = load <2 x double>, ptr %1173, align 16, !tbaa !26
  %1175 = fneg <2 x double> %1174
  %1176 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1175, <2 x double> %1172, <2 x double> %1162)
  %1177 = getelementptr inbounds nuw i8, ptr %1133, i64 1312
  %1178 = load <2 x double>, ptr %1177, align 16, !tbaa !26
  %1179 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1174, <2 x double> %1178, <2 x double> splat (double 1.000000e+00))
  %1180 = fdiv <2 x double> %1176, %1179
  %1181 = getelementptr inbounds nuw i8, ptr %1133, i64 1872
  %1182 = load <2 x i64>, ptr %1181, align 16, !tbaa !26
  %1183 = load <2 x double>, ptr %176, align 16, !tbaa !26
  %1184 = icmp eq <2 x i64> %1182, zeroinitializer
  %1185 = select <2 x i1> %1184, <2 x double> %1134, <2 x double> %1183
  %1186 = getelementptr inbounds nuw i8, ptr %1133, i64 1376
  store <2 x double> %1185, ptr %1186, align 16, !tbaa !26
  %1187 = load <2 x double>, ptr %177, align 16, !tbaa !26
  %1188 = select <2 x i1> %1184, <2 x double> %1180, <2 x double> %1187
  %1189 = getelementptr inbounds nuw i8, ptr %1133, i64 800
  store <2 x double> %1188, ptr %1189, align 16, !tbaa !26
  %1190 = getelementptr inbounds nuw i8, ptr %1133, i64 224
  %1191 = load <2 x double>, ptr %1190, align 16, !tbaa !26
  %1192 = fcmp ule <2 x double> %1191, zeroinitializer
  %1193 = getelementptr inbounds nuw i8, ptr %1133, i64 736
  %1194 = getelementptr inbounds nuw i8, ptr %1133, i64 768
  %1195 = load <2 x double>, ptr %1194, align 16, !tbaa !26
  %1196 = fcmp ogt <2 x double> %1191, splat (double 1.000000e-30)
  %1197 = select <2 x i1> %1196, <2 x double> %1191, <2 x double> splat (double 1.000000e-30)
  %1198 = fdiv <2 x double> %1195, %1197
  %1199 = fcmp ogt <2 x double> %1198, zeroinitializer
  %1200 = select <2 x i1> %1199, <2 x double> %1198, <2 x double> zeroinitializer
  %1201 = fcmp olt <2 x double> %1200, splat (double 1.000000e+00)
  %1202 = select <2 x i1> %1201, <2 x double> %1200, <2 x double> splat (double 1.000000e+00)
  %1203 = select <2 x i1> %1192, <2 x double> zeroinitializer, <2 x double> %1202
  %1204 = getelementptr inbounds nuw i8, ptr %1133, i64 528
  %1205 = load <2 x double>, ptr %1204, align 16, !tbaa !26
  %1206 = fmul <2 x double> %1203, splat (double 4.180000e+03)
  %1207 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1206, <2 x double> %1191, <2 x double> %1205)
  %1208 = getelementptr inbounds nuw i8, ptr %1133, i64 1072
  %1209 = load <2 x double>, ptr %1208, align 16, !tbaa !26
  %1210 = getelementptr inbounds nuw i8, ptr %1133, i64 1264
  %1211 = load <2 x double>, ptr %1210, align 16, !tbaa !26
  %1212 = fmul <2 x double> %1168, %1211
  %1213 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1164, <2 x double> %1209, <2 x double> %1212)
  %1214 = getelementptr inbounds nuw i8, ptr %1133, i64 1840
  %1215 = load <2 x i64>, ptr %1214, align 16, !tbaa !26
  %1216 = fcmp ule <2 x double> %1205, zeroinitializer
  %1217 = getelementptr inbounds nuw i8, ptr %1133, i64 1728
  store <2 x double> %1203, ptr %1217, align 16, !tbaa !26
  %1218 = fmul <2 x double> %1178, %1207
  %1219 = icmp eq <2 x i64> %1215, splat (i64 -1)
  %1220 = select <2 x i1> %1216, <2 x i1> splat (i1 true), <2 x i1> %1219
  %1221 = select <2 x i1> %1220, <2 x double> zeroinitializer, <2 x double> %1218
  %1222 = getelementptr inbounds nuw i8, ptr %1133, i64 1744
  store <2 x double> %1221, ptr %1222, align 16, !tbaa !26
  %1223 = fmul <2 x double> %1213, %1207
  %1224 = select <2 x i1> %1220, <2 x double> zeroinitializer, <2 x double> %1223
  %1225 = getelementptr inbounds nuw i8, ptr %1133, i64 1760
  store <2 x double> %1224, ptr %1225, align 16, !tbaa !26
  %1226 = load <2 x double>, ptr %1133, align 16, !tbaa !26
  %1227 = load <2 x double>, ptr %1193, align 16, !tbaa !26
  %1228 = fsub <2 x double> %1226, %1227
  %1229 = fsub <2 x double> splat (double 1.000000e+00), %1203
  %1230 = getelementptr inbounds nuw i8, ptr %1133, i64 480
  %1231 = load <2 x double>, ptr %1230, align 16, !tbaa !26
  %1232 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1229, <2 x double> %1231, <2 x double> %1228)
  %1233 = load <2 x double>, ptr %178, align 16, !tbaa !26
  %1234 = fdiv <2 x double> splat (double 1.000000e+00), %1233
  %1235 = getelementptr inbounds nuw i8, ptr %1133, i64 560
  %1236 = load <2 x double>, ptr %1235, align 16, !tbaa !26
  %1237 = fcmp ogt <2 x double> %1236, splat (double 1.000000e-30)
  %1238 = select <2 x i1> %1237, <2 x double> %1236, <2 x double> splat (double 1.000000e-30)
  %1239 = fdiv <2 x double> %1232, %1238
  %1240 = fadd <2 x double> %1234, %1239
  %1241 = getelementptr inbounds nuw i8, ptr %1133, i64 1776
  store <2 x double> %1240, ptr %1241, align 16, !tbaa !26
  %1242 = getelementptr inbounds nuw i8, ptr %1133, i64 1696
  store <2 x double> %1154, ptr %1242, align 16, !tbaa !26
  %1243 = getelementptr inbounds nuw i8, ptr %1133, i64 640
  %1244 = load <2 x double>, ptr %1243, align 16, !tbaa !26
  %1245 = getelementptr inbounds nuw i8, ptr %1133, i64 656
  %1246 = load <2 x double>, ptr %1245, align 16, !tbaa !26
  %1247 = getelementptr inbounds nuw i8, ptr %1133, i64 672
  %1248 = load <2 x double>, ptr %1247, align 16, !tbaa !26
  %1249 = getelementptr inbounds nuw i8, ptr %1133, i64 688
  %1250 = load <2 x double>, ptr %1249, align 16, !tbaa !26
  %1251 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1250, <2 x double> %1248)
  %1252 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1251, <2 x double> %1246)
  %1253 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1252, <2 x double> %1244)
  %1254 = getelementptr inbounds nuw i8, ptr %1133, i64 912
  store <2 x double> %1253, ptr %1254, align 16, !tbaa !26
  %1255 = getelementptr inbounds nuw i8, ptr %1133, i64 1104
  %1256 = load <2 x double>, ptr %1255, align 16, !tbaa !26
  %1257 = fmul <2 x double> %1164, %1256
  %1258 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1178, <2 x double> %1253, <2 x double> %1257)
  %1259 = getelementptr inbounds nuw i8, ptr %1133, i64 1296
  %1260 = load <2 x double>, ptr %1259, align 16, !tbaa !26
  %1261 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1168, <2 x double> %1260, <2 x double> %1258)
  %1262 = fmul <2 x double> %1261, splat (double 5.000000e-01)
  %1263 = getelementptr inbounds nuw i8, ptr %1133, i64 1680
  store <2 x double> %1262, ptr %1263, align 16, !tbaa !26
  %1264 = getelementptr inbounds nuw i8, ptr %1133, i64 576
  %1265 = load <2 x double>, ptr %1264, align 16, !tbaa !26
  %1266 = getelementptr inbounds nuw i8, ptr %1133, i64 592
  %1267 = load <2 x double>, ptr %1266, align 16, !tbaa !26
  %1268 = getelementptr inbounds nuw i8, ptr %1133, i64 608
  %1269 = load <2 x double>, ptr %1268, align 16, !tbaa !26
  %1270 = getelementptr inbounds nuw i8, ptr %1133, i64 624
  %1271 = load <2 x double>, ptr %1270, align 16, !tbaa !26
  %1272 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1271, <2 x double> %1269)
  %1273 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1272, <2 x double> %1267)
  %1274 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1273, <2 x double> %1265)
  %1275 = getelementptr inbounds nuw i8, ptr %1133, i64 1664
  store <2 x double> %1274, ptr %1275, align 16, !tbaa !26
  %1276 = getelementptr inbounds nuw i8, ptr %1133, i64 1888
  %1277 = load i64, ptr %1276, align 16, !tbaa !31
  %1278 = icmp eq i64 %1277, 0
  %1279 = getelementptr inbounds nuw i8, ptr %1133, i64 16
  %1280 = load <2 x double>, ptr %1279, align 16
  %1281 = fsub <2 x double> %1227, %1280
  %1282 = fdiv <2 x double> splat (double 1.000000e+00), %1281
  %1283 = fdiv <2 x double> %1274, %1227
  %1284 = select i1 %1278, <2 x double> %1283, <2 x double> %1282
  %1285 = load i64, ptr %132, align 16, !tbaa !21
  %1286 = getelementptr inbounds nuw i8, ptr %1133, i64 2008
  %1287 = load ptr, ptr %1286, align 8, !tbaa !35
  br i1 %1278, label %1288, label %1292

1288:                                             ; preds = %1130
  %1289 = getelementptr inbounds <2 x double>, ptr %1287, i64 %1285
  %1290 = load <2 x double>, ptr %1289, align 16, !tbaa !26
  %1291 = fmul <2 x double> %1284, %1290
  br label %1308

1292:                                             ; preds = %1130
  %1293 = shl nsw i64 %1285, 6
  %1294 = getelementptr inbounds i8, ptr %1287, i64 %1293
  %1295 = load <2 x double>, ptr %1294, align 16, !tbaa !26
  %1296 = getelementptr inbounds nuw i8, ptr %1294, i64 16
  %1297 = load <2 x double>, ptr %1296, align 16, !tbaa !26
  %1298 = getelementptr inbounds nuw i8, ptr %1294, i64 32
  %1299 = load <2 x double>, ptr %1298, align 16, !tbaa !26
  %1300 = getelementptr inbounds nuw i8, ptr %1294, i64 48
  %1301 = load <2 x double>, ptr %1300, align 16, !tbaa !26
  %1302 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1301, <2 x double> %1299)
  %1303 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1302, <2 x double> %1297)
  %1304 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1303, <2 x double> %1295)
  %1305 = icmp sgt i64 %1285, %1277
  %1306 = fmul <2 x double> %1284, %1304
  %1307 = select i1 %1305, <2 x double> %1306, <2 x double> %1304
  br label %1308

1308:                                             ; preds = %1288, %1292
  %1309 = phi <2 x double> [ %1291, %1288 ], [ %1307, %1292 ]
  %1310 = getelementptr inbounds nuw i8, ptr %1133, i64 1392
  %1311 = load <2 x double>, ptr %1310, align 16, !tbaa !26
  %1312 = fcmp ogt <2 x double> %1228, splat (double 0x3D719799812DEA11)
  %1313 = select <2 x i1> %1312, <2 x double> %1228, <2 x double> splat (double 0x3D719799812DEA11)
  %1314 = getelementptr inbounds nuw i8, ptr %1133, i64 1632
  store <2 x double> %1282, ptr %1314, align 16, !tbaa !26
  %1315 = getelementptr inbounds nuw i8, ptr %1133, i64 176
  %1316 = load <2 x double>, ptr %1315, align 16, !tbaa !26
  %1317 = fdiv <2 x double> %1316, %1313
  %1318 = getelementptr inbounds nuw i8, ptr %1133, i64 1648
  store <2 x double> %1317, ptr %1318, align 16, !tbaa !26
  %1319 = getelementptr inbounds nuw i8, ptr %1133, i64 1896
  %1320 = load ptr, ptr %1319, align 8, !tbaa !57
  %1321 = load i64, ptr %132, align 16, !tbaa !21
  %1322 = getelementptr <2 x double>, ptr %1320, i64 %1321
  %1323 = getelementptr i8, ptr %1322, i64 -16
  %1324 = load <2 x double>, ptr %1323, align 16, !tbaa !26
  %1325 = fadd <2 x double> %1311, %1324
  %1326 = fmul <2 x double> %1325, splat (double 5.000000e-01)
  %1327 = getelementptr inbounds nuw i8, ptr %1133, i64 48
  %1328 = load <2 x double>, ptr %1327, align 16, !tbaa !26
  %1329 = getelementptr inbounds nuw i8, ptr %1133, i64 64
  %1330 = load <2 x double>, ptr %1329, align 16, !tbaa !26
  %1331 = getelementptr inbounds nuw i8, ptr %1133, i64 80
  %1332 = load <2 x double>, ptr %1331, align 16, !tbaa !26
  %1333 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1326, <2 x double> %1332, <2 x double> %1330)
  %1334 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1326, <2 x double> %1333, <2 x double> %1328)
  %1335 = fmul <2 x double> %1309, %1334
  %1336 = fmul <2 x double> %1203, %1335
  %1337 = getelementptr inbounds nuw i8, ptr %1133, i64 512
  %1338 = load <2 x double>, ptr %1337, align 16, !tbaa !26
  %1339 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1336, <2 x double> %1338, <2 x double> splat (double 1.000000e+00))
  %1340 = fdiv <2 x double> splat (double 1.000000e+00), %1339
  %1341 = icmp eq <2 x i64> %1215, zeroinitializer
  %1342 = select <2 x i1> %1341, <2 x double> %1340, <2 x double> splat (double 1.000000e+00)
  %1343 = getelementptr inbounds nuw i8, ptr %1133, i64 1712
  store <2 x double> %1342, ptr %1343, align 16, !tbaa !26
  %1344 = fmul <2 x double> %1335, %1342
  %1345 = getelementptr inbounds nuw i8, ptr %1133, i64 1504
  store <2 x double> %1344, ptr %1345, align 16, !tbaa !26
  %1346 = fmul <2 x double> %1262, splat (double 2.000000e+00)
  %1347 = getelementptr inbounds nuw i8, ptr %1133, i64 96
  %1348 = load <2 x double>, ptr %1347, align 16, !tbaa !26
  %1349 = getelementptr inbounds nuw i8, ptr %1133, i64 112
  %1350 = load <2 x double>, ptr %1349, align 16, !tbaa !26
  %1351 = getelementptr inbounds nuw i8, ptr %1133, i64 128
  %1352 = load <2 x double>, ptr %1351, align 16, !tbaa !26
  %1353 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1311, <2 x double> %1352, <2 x double> %1350)
  %1354 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1311, <2 x double> %1353, <2 x double> %1348)
  %1355 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1346, <2 x double> %1354, <2 x double> %1344)
  %1356 = getelementptr inbounds nuw i8, ptr %1133, i64 1536
  store <2 x double> %1355, ptr %1356, align 16, !tbaa !26
  %1357 = fmul <2 x double> %1188, %1229
  %1358 = getelementptr inbounds nuw i8, ptr %1133, i64 496
  %1359 = load <2 x double>, ptr %1358, align 16, !tbaa !26
  %1360 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1357, <2 x double> %1359, <2 x double> splat (double 1.000000e+00))
  %1361 = fdiv <2 x double> %1188, %1360
  %1362 = load i64, ptr %133, align 8, !tbaa !22
  %1363 = sitofp i64 %1362 to double
  %1364 = fmul double %1363, 2.000000e+00
  %1365 = insertelement <2 x double> poison, double %1364, i64 0
  %1366 = shufflevector <2 x double> %1365, <2 x double> poison, <2 x i32> zeroinitializer
  %1367 = fmul <2 x double> %1317, %1366
  %1368 = fadd <2 x double> %1361, %1367
  %1369 = fdiv <2 x double> %1361, %1368
  %1370 = fmul <2 x double> %1274, %1367
  %1371 = select <2 x i1> %1341, <2 x double> %1361, <2 x double> %1370
  %1372 = getelementptr inbounds nuw i8, ptr %1133, i64 1520
  store <2 x double> %1371, ptr %1372, align 16, !tbaa !26
  %1373 = fmul <2 x double> %1367, %1369
  %1374 = select <2 x i1> %1341, <2 x double> %1361, <2 x double> %1373
  %1375 = getelementptr inbounds nuw i8, ptr %1133, i64 1552
  store <2 x double> %1374, ptr %1375, align 16, !tbaa !26
  %1376 = select <2 x i1> %1341, <2 x double> splat (double 1.000000e+00), <2 x double> %1369
  %1377 = getelementptr inbounds nuw i8, ptr %1133, i64 1568
  store <2 x double> %1376, ptr %1377, align 16, !tbaa !26
  br i1 %1278, label %1539, label %1378

1378:                                             ; preds = %1308
  %1379 = getelementptr inbounds nuw i8, ptr %1133, i64 144
  %1380 = load <2 x double>, ptr %1379, align 16, !tbaa !26
  %1381 = getelementptr inbounds nuw i8, ptr %1133, i64 160
  %1382 = load <2 x double>, ptr %1381, align 16, !tbaa !26
  %1383 = getelementptr inbounds nuw i8, ptr %1133, i64 384
  %1384 = load <2 x double>, ptr %1383, align 16, !tbaa !26
  %1385 = load i64, ptr %132, align 16, !tbaa !21
  %1386 = fsub <2 x double> %1253, %1384
  %1387 = fmul <2 x double> %1350, splat (double 5.000000e-01)
  %1388 = fmul <2 x double> %1352, splat (double 0x3FE5555555555555)
  %1389 = getelementptr inbounds nuw i8, ptr %1133, i64 1984
  %1390 = load ptr, ptr %1389, align 16, !tbaa !67
  %1391 = getelementptr inbounds nuw i8, ptr %1133, i64 1992
  %1392 = load ptr, ptr %1391, align 8, !tbaa !48
  %1393 = getelementptr inbounds nuw i8, ptr %1133, i64 1920
  %1394 = load ptr, ptr %1393, align 16, !tbaa !58
  %1395 = getelementptr inbounds nuw i8, ptr %1133, i64 1960
  %1396 = load ptr, ptr %1395, align 8, !tbaa !68
  %1397 = getelementptr inbounds nuw i8, ptr %1133, i64 1968
  %1398 = load ptr, ptr %1397, align 16, !tbaa !69
  %1399 = getelementptr inbounds nuw i8, ptr %1133, i64 1976
  %1400 = load ptr, ptr %1399, align 8, !tbaa !70
  %1401 = getelementptr inbounds nuw i8, ptr %1133, i64 1944
  %1402 = load ptr, ptr %1401, align 8, !tbaa !71
  %1403 = getelementptr inbounds nuw i8, ptr %1133, i64 1952
  %1404 = load ptr, ptr %1403, align 16, !tbaa !72
  %1405 = icmp sgt i64 %1385, 0
  br i1 %1405, label %1406, label %1651

1406:                                             ; preds = %1378
  %1407 = load <2 x double>, ptr %1320, align 16, !tbaa !26
  %1408 = getelementptr inbounds nuw i8, ptr %1133, i64 720
  %1409 = load <2 x double>, ptr %1408, align 16, !tbaa !26
  %1410 = getelementptr inbounds nuw i8, ptr %1133, i64 704
  %1411 = load <2 x double>, ptr %1410, align 16, !tbaa !26
  %1412 = fmul <2 x double> %1262, splat (double -2.000000e+00)
  %1413 = fmul <2 x double> %1412, %1311
  %1414 = fmul <2 x double> %1311, %1413
  %1415 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1311, <2 x double> %1388, <2 x double> %1387)
  %1416 = fmul <2 x double> %1414, %1415
  %1417 = getelementptr inbounds nuw i8, ptr %1133, i64 2008
  %1418 = fmul <2 x double> %1281, %1409
  %1419 = fdiv <2 x double> %1411, %1380
  br label %1420

1420:                                             ; preds = %1406, %1504
  %1421 = phi <2 x double> [ %1407, %1406 ], [ %1508, %1504 ]
  %1422 = phi <2 x double> [ zeroinitializer, %1406 ], [ %1505, %1504 ]
  %1423 = phi <2 x double> [ zeroinitializer, %1406 ], [ %1506, %1504 ]
  %1424 = phi <2 x double> [ zeroinitializer, %1406 ], [ %1507, %1504 ]
  %1425 = phi <2 x double> [ zeroinitializer, %1406 ], [ %1534, %1504 ]
  %1426 = phi <2 x double> [ zeroinitializer, %1406 ], [ %1536, %1504 ]
  %1427 = phi <2 x double> [ %1382, %1406 ], [ %1509, %1504 ]
  %1428 = phi i64 [ 0, %1406 ], [ %1430, %1504 ]
  %1429 = phi <2 x double> [ zeroinitializer, %1406 ], [ %1510, %1504 ]
  %1430 = add nuw nsw i64 %1428, 1
  %1431 = icmp slt i64 %1430, %1385
  br i1 %1431, label %1432, label %1501

1432:                                             ; preds = %1420
  %1433 = getelementptr inbounds nuw <2 x double>, ptr %1320, i64 %1430
  %1434 = load <2 x double>, ptr %1433, align 16, !tbaa !26
  %1435 = icmp slt i64 %1430, %1277
  br i1 %1435, label %1443, label %1436

1436:                                             ; preds = %1432
  %1437 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1434, <2 x double> %1352, <2 x double> %1350)
  %1438 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1434, <2 x double> %1437, <2 x double> %1348)
  %1439 = fneg <2 x double> %1434
  %1440 = fmul <2 x double> %1434, %1439
  %1441 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1434, <2 x double> %1388, <2 x double> %1387)
  %1442 = fmul <2 x double> %1440, %1441
  br label %1443

1443:                                             ; preds = %1432, %1436
  %1444 = phi <2 x double> [ %1438, %1436 ], [ %1382, %1432 ]
  %1445 = phi <2 x double> [ %1442, %1436 ], [ zeroinitializer, %1432 ]
  %1446 = load i64, ptr %1276, align 16, !tbaa !31
  %1447 = icmp eq i64 %1446, 0
  %1448 = load ptr, ptr %1417, align 8, !tbaa !35
  br i1 %1447, label %1449, label %1453

1449:                                             ; preds = %1443
  %1450 = getelementptr inbounds nuw <2 x double>, ptr %1448, i64 %1430
  %1451 = load <2 x double>, ptr %1450, align 16, !tbaa !26
  %1452 = fmul <2 x double> %1282, %1451
  br label %1469

1453:                                             ; preds = %1443
  %1454 = shl nsw i64 %1430, 6
  %1455 = getelementptr inbounds nuw i8, ptr %1448, i64 %1454
  %1456 = load <2 x double>, ptr %1455, align 16, !tbaa !26
  %1457 = getelementptr inbounds nuw i8, ptr %1455, i64 16
  %1458 = load <2 x double>, ptr %1457, align 16, !tbaa !26
  %1459 = getelementptr inbounds nuw i8, ptr %1455, i64 32
  %1460 = load <2 x double>, ptr %1459, align 16, !tbaa !26
  %1461 = getelementptr inbounds nuw i8, ptr %1455, i64 48
  %1462 = load <2 x double>, ptr %1461, align 16, !tbaa !26
  %1463 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1462, <2 x double> %1460)
  %1464 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1463, <2 x double> %1458)
  %1465 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1227, <2 x double> %1464, <2 x double> %1456)
  %1466 = icmp slt i64 %1428, %1446
  %1467 = fmul <2 x double> %1282, %1465
  %1468 = select i1 %1466, <2 x double> %1465, <2 x double> %1467
  br label %1469

1469:                                             ; preds = %1453, %1449
  %1470 = phi <2 x double> [ %1452, %1449 ], [ %1468, %1453 ]
  %1471 = icmp slt i64 %1428, %1446
  br i1 %1471, label %1478, label %1472

1472:                                             ; preds = %1469
  %1473 = fadd <2 x double> %1421, %1434
  %1474 = fmul <2 x double> %1473, splat (double 5.000000e-01)
  %1475 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1474, <2 x double> %1332, <2 x double> %1330)
  %1476 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1474, <2 x double> %1475, <2 x double> %1328)
  %1477 = fmul <2 x double> %1476, %1470
  br label %1488

1478:                                             ; preds = %1469
  %1479 = icmp slt i64 %1430, %1446
  br i1 %1479, label %1480, label %1482

1480:                                             ; preds = %1478
  %1481 = fmul <2 x double> %1380, %1470
  br label %1488

1482:                                             ; preds = %1478
  %1483 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1434, <2 x double> %1332, <2 x double> %1330)
  %1484 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1434, <2 x double> %1483, <2 x double> %1328)
  %1485 = fdiv <2 x double> %1418, %1484
  %1486 = fadd <2 x double> %1419, %1485
  %1487 = fdiv <2 x double> %1470, %1486
  br label %1488

1488:                                             ; preds = %1472, %1480, %1482
  %1489 = phi <2 x double> [ %1477, %1472 ], [ %1481, %1480 ], [ %1487, %1482 ]
  br i1 %1435, label %1494, label %1490

1490:                                             ; preds = %1488
  %1491 = getelementptr inbounds nuw <2 x double>, ptr %1390, i64 %1430
  %1492 = load <2 x double>, ptr %1491, align 16, !tbaa !26
  %1493 = fmul <2 x double> %1262, %1492
  br label %1494

1494:                                             ; preds = %1488, %1490
  %1495 = phi <2 x double> [ %1493, %1490 ], [ zeroinitializer, %1488 ]
  %1496 = fneg <2 x double> %1495
  %1497 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1496, <2 x double> %1427, <2 x double> %1489)
  %1498 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1495, <2 x double> %1444, <2 x double> %1489)
  %1499 = fadd <2 x double> %1429, %1445
  %1500 = fmul <2 x double> %1499, %1495
  br label %1504

1501:                                             ; preds = %1420
  %1502 = load <2 x double>, ptr %1345, align 16, !tbaa !26
  %1503 = load <2 x double>, ptr %1356, align 16, !tbaa !26
  br label %1504

1504:                                             ; preds = %1501, %1494
  %1505 = phi <2 x double> [ %1497, %1494 ], [ %1502, %1501 ]
  %1506 = phi <2 x double> [ %1498, %1494 ], [ %1503, %1501 ]
  %1507 = phi <2 x double> [ %1500, %1494 ], [ %1416, %1501 ]
  %1508 = phi <2 x double> [ %1434, %1494 ], [ %1421, %1501 ]
  %1509 = phi <2 x double> [ %1444, %1494 ], [ %1427, %1501 ]
  %1510 = phi <2 x double> [ %1445, %1494 ], [ %1429, %1501 ]
  %1511 = getelementptr inbounds nuw <2 x double>, ptr %1392, i64 %1428
  %1512 = load <2 x double>, ptr %1511, align 16, !tbaa !26
  %1513 = icmp slt i64 %1428, %1277
  %1514 = select i1 %1513, <2 x double> %1384, <2 x double> %1386
  %1515 = fmul <2 x double> %1178, %1514
  %1516 = fmul <2 x double> %1515, %1512
  %1517 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1516, <2 x double> %1427, <2 x double> %1505)
  %1518 = fadd <2 x double> %1423, %1517
  %1519 = fsub <2 x double> %1507, %1424
  %1520 = fneg <2 x double> %1516
  %1521 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1520, <2 x double> %1429, <2 x double> %1519)
  %1522 = getelementptr inbounds nuw <2 x double>, ptr %1394, i64 %1428
  %1523 = load <2 x double>, ptr %1522, align 16, !tbaa !26
  %1524 = fsub <2 x double> %1521, %1523
  %1525 = fneg <2 x double> %1422
  %1526 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1525, <2 x double> %1426, <2 x double> %1518)
  %1527 = fdiv <2 x double> splat (double 1.000000e+00), %1526
  %1528 = getelementptr inbounds nuw <2 x double>, ptr %1396, i64 %1428
  store <2 x double> %1524, ptr %1528, align 16, !tbaa !26
  %1529 = getelementptr inbounds nuw <2 x double>, ptr %1398, i64 %1428
  store <2 x double> %1422, ptr %1529, align 16, !tbaa !26
  %1530 = fadd <2 x double> %1422, %1506
  %1531 = fsub <2 x double> %1530, %1518
  %1532 = getelementptr inbounds nuw <2 x double>, ptr %1400, i64 %1428
  store <2 x double> %1531, ptr %1532, align 16, !tbaa !26
  %1533 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1422, <2 x double> %1425, <2 x double> %1524)
  %1534 = fmul <2 x double> %1533, %1527
  %1535 = getelementptr inbounds nuw <2 x double>, ptr %1402, i64 %1428
  store <2 x double> %1534, ptr %1535, align 16, !tbaa !26
  %1536 = fmul <2 x double> %1506, %1527
  %1537 = getelementptr inbounds nuw <2 x double>, ptr %1404, i64 %1428
  store <2 x double> %1536, ptr %1537, align 16, !tbaa !26
  %1538 = icmp eq i64 %1430, %1385
  br i1 %1538, label %1651, label %1420, !llvm.loop !73

1539:                                             ; preds = %1308
  %1540 = getelementptr inbounds nuw i8, ptr %1133, i64 384
  %1541 = load <2 x double>, ptr %1540, align 16, !tbaa !26
  %1542 = load i64, ptr %132, align 16, !tbaa !21
  %1543 = fsub <2 x double> %1253, %1541
  %1544 = fmul <2 x double> %1178, %1543
  %1545 = fmul <2 x double> %1350, splat (double 5.000000e-01)
  %1546 = fmul <2 x double> %1352, splat (double 0x3FE5555555555555)
  %1547 = getelementptr inbounds nuw i8, ptr %1133, i64 1984
  %1548 = load ptr, ptr %1547, align 16, !tbaa !67
  %1549 = getelementptr inbounds nuw i8, ptr %1133, i64 1992
  %1550 = load ptr, ptr %1549, align 8, !tbaa !48
  %1551 = getelementptr inbounds nuw i8, ptr %1133, i64 1920
  %1552 = load ptr, ptr %1551, align 16, !tbaa !58
  %1553 = getelementptr inbounds nuw i8, ptr %1133, i64 1960
  %1554 = load ptr, ptr %1553, align 8, !tbaa !68
  %1555 = getelementptr inbounds nuw i8, ptr %1133, i64 1968
  %1556 = load ptr, ptr %1555, align 16, !tbaa !69
  %1557 = getelementptr inbounds nuw i8, ptr %1133, i64 1976
  %1558 = load ptr, ptr %1557, align 8, !tbaa !70
  %1559 = getelementptr inbounds nuw i8, ptr %1133, i64 1944
  %1560 = load ptr, ptr %1559, align 8, !tbaa !71
  %1561 = getelementptr inbounds nuw i8, ptr %1133, i64 1952
  %1562 = load ptr, ptr %1561, align 16, !tbaa !72
  %1563 = icmp sgt i64 %1542, 0
  br i1 %1563, label %1564, label %1651

1564:                                             ; preds = %1539
  %1565 = load <2 x double>, ptr %1320, align 16, !tbaa !26
  %1566 = fneg <2 x double> %1565
  %1567 = fmul <2 x double> %1565, %1566
  %1568 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1565, <2 x double> %1546, <2 x double> %1545)
  %1569 = fmul <2 x double> %1567, %1568
  %1570 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1565, <2 x double> %1352, <2 x double> %1350)
  %1571 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1565, <2 x double> %1570, <2 x double> %1348)
  %1572 = fmul <2 x double> %1262, splat (double -2.000000e+00)
  %1573 = fmul <2 x double> %1572, %1311
  %1574 = fmul <2 x double> %1311, %1573
  %1575 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1311, <2 x double> %1546, <2 x double> %1545)
  %1576 = fmul <2 x double> %1574, %1575
  %1577 = getelementptr inbounds nuw i8, ptr %1133, i64 2008
  br label %1578

1578:                                             ; preds = %1564, %1619
  %1579 = phi <2 x double> [ %1565, %1564 ], [ %1623, %1619 ]
  %1580 = phi <2 x double> [ zeroinitializer, %1564 ], [ %1620, %1619 ]
  %1581 = phi <2 x double> [ zeroinitializer, %1564 ], [ %1621, %1619 ]
  %1582 = phi <2 x double> [ zeroinitializer, %1564 ], [ %1622, %1619 ]
  %1583 = phi <2 x double> [ zeroinitializer, %1564 ], [ %1646, %1619 ]
  %1584 = phi <2 x double> [ zeroinitializer, %1564 ], [ %1648, %1619 ]
  %1585 = phi <2 x double> [ %1571, %1564 ], [ %1624, %1619 ]
  %1586 = phi i64 [ 0, %1564 ], [ %1588, %1619 ]
  %1587 = phi <2 x double> [ %1569, %1564 ], [ %1625, %1619 ]
  %1588 = add nuw nsw i64 %1586, 1
  %1589 = icmp slt i64 %1588, %1542
  br i1 %1589, label %1590, label %1616

1590:                                             ; preds = %1578
  %1591 = getelementptr inbounds nuw <2 x double>, ptr %1320, i64 %1588
  %1592 = load <2 x double>, ptr %1591, align 16, !tbaa !26
  %1593 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1592, <2 x double> %1352, <2 x double> %1350)
  %1594 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1592, <2 x double> %1593, <2 x double> %1348)
  %1595 = fneg <2 x double> %1592
  %1596 = fmul <2 x double> %1592, %1595
  %1597 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1592, <2 x double> %1546, <2 x double> %1545)
  %1598 = fmul <2 x double> %1596, %1597
  %1599 = fadd <2 x double> %1579, %1592
  %1600 = fmul <2 x double> %1599, splat (double 5.000000e-01)
  %1601 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1600, <2 x double> %1332, <2 x double> %1330)
  %1602 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1600, <2 x double> %1601, <2 x double> %1328)
  %1603 = load ptr, ptr %1577, align 8, !tbaa !35
  %1604 = getelementptr inbounds nuw <2 x double>, ptr %1603, i64 %1588
  %1605 = load <2 x double>, ptr %1604, align 16, !tbaa !26
  %1606 = fmul <2 x double> %1283, %1605
  %1607 = fmul <2 x double> %1606, %1602
  %1608 = getelementptr inbounds nuw <2 x double>, ptr %1548, i64 %1588
  %1609 = load <2 x double>, ptr %1608, align 16, !tbaa !26
  %1610 = fmul <2 x double> %1262, %1609
  %1611 = fneg <2 x double> %1610
  %1612 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1611, <2 x double> %1585, <2 x double> %1607)
  %1613 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1610, <2 x double> %1594, <2 x double> %1607)
  %1614 = fadd <2 x double> %1587, %1598
  %1615 = fmul <2 x double> %1614, %1610
  br label %1619

1616:                                             ; preds = %1578
  %1617 = load <2 x double>, ptr %1345, align 16, !tbaa !26
  %1618 = load <2 x double>, ptr %1356, align 16, !tbaa !26
  br label %1619

1619:                                             ; preds = %1616, %1590
  %1620 = phi <2 x double> [ %1612, %1590 ], [ %1617, %1616 ]
  %1621 = phi <2 x double> [ %1613, %1590 ], [ %1618, %1616 ]
  %1622 = phi <2 x double> [ %1615, %1590 ], [ %1576, %1616 ]
  %1623 = phi <2 x double> [ %1592, %1590 ], [ %1579, %1616 ]
  %1624 = phi <2 x double> [ %1594, %1590 ], [ %1585, %1616 ]
  %1625 = phi <2 x double> [ %1598, %1590 ], [ %1587, %1616 ]
  %1626 = getelementptr inbounds nuw <2 x double>, ptr %1550, i64 %1586
  %1627 = load <2 x double>, ptr %1626, align 16, !tbaa !26
  %1628 = fmul <2 x double> %1544, %1627
  %1629 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1628, <2 x double> %1585, <2 x double> %1620)
  %1630 = fadd <2 x double> %1581, %1629
  %1631 = fsub <2 x double> %1622, %1582
  %1632 = fneg <2 x double> %1628
  %1633 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1632, <2 x double> %1587, <2 x double> %1631)
  %1634 = getelementptr inbounds nuw <2 x double>, ptr %1552, i64 %1586
  %1635 = load <2 x double>, ptr %1634, align 16, !tbaa !26
  %1636 = fsub <2 x double> %1633, %1635
  %1637 = fneg <2 x double> %1580
  %1638 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1637, <2 x double> %1584, <2 x double> %1630)
  %1639 = fdiv <2 x double> splat (double 1.000000e+00), %1638
  %1640 = getelementptr inbounds nuw <2 x double>, ptr %1554, i64 %1586
  store <2 x double> %1636, ptr %1640, align 16, !tbaa !26
  %1641 = getelementptr inbounds nuw <2 x double>, ptr %1556, i64 %1586
  store <2 x double> %1580, ptr %1641, align 16, !tbaa !26
  %1642 = fadd <2 x double> %1580, %1621
  %1643 = fsub <2 x double> %1642, %1630
  %1644 = getelementptr inbounds nuw <2 x double>, ptr %1558, i64 %1586
  store <2 x double> %1643, ptr %1644, align 16, !tbaa !26
  %1645 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1580, <2 x double> %1583, <2 x double> %1636)
  %1646 = fmul <2 x double> %1645, %1639
  %1647 = getelementptr inbounds nuw <2 x double>, ptr %1560, i64 %1586
  store <2 x double> %1646, ptr %1647, align 16, !tbaa !26
  %1648 = fmul <2 x double> %1621, %1639
  %1649 = getelementptr inbounds nuw <2 x double>, ptr %1562, i64 %1586
  store <2 x double> %1648, ptr %1649, align 16, !tbaa !26
  %1650 = icmp eq i64 %1588, %1542
  br i1 %1650, label %1651, label %1578, !llvm.loop !74

1651:                                             ; preds = %1504, %1619, %1378, %1539
  %1652 = getelementptr inbounds nuw i8, ptr %1133, i64 1944
  %1653 = load ptr, ptr %1652, align 8, !tbaa !71
  %1654 = load i64, ptr %132, align 16, !tbaa !21
  %1655 = add nsw i64 %1654, -1
  %1656 = getelementptr inbounds <2 x double>, ptr %1653, i64 %1655
  %1657 = load <2 x double>, ptr %1656, align 16, !tbaa !26
  %1658 = getelementptr inbounds nuw i8, ptr %1133, i64 1952
  %1659 = load ptr, ptr %1658, align 16, !tbaa !72
  %1660 = getelementptr inbounds <2 x double>, ptr %1659, i64 %1655
  %1661 = load <2 x double>, ptr %1660, align 16, !tbaa !26
  %1662 = load <2 x double>, ptr %1345, align 16, !tbaa !26
  %1663 = fmul <2 x double> %1657, %1662
  %1664 = fsub <2 x double> splat (double 1.000000e+00), %1661
  %1665 = fmul <2 x double> %1662, %1664
  %1666 = load <2 x double>, ptr %1372, align 16, !tbaa !26
  %1667 = load <2 x double>, ptr %1186, align 16, !tbaa !26
  %1668 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1666, <2 x double> %1667, <2 x double> %1663)
  %1669 = load <2 x double>, ptr %1225, align 16, !tbaa !26
  %1670 = fsub <2 x double> %1668, %1669
  %1671 = fadd <2 x double> %1665, %1666
  %1672 = load <2 x double>, ptr %1222, align 16, !tbaa !26
  %1673 = fadd <2 x double> %1671, %1672
  %1674 = load <2 x i64>, ptr %1214, align 16, !tbaa !26
  %1675 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1674)
  %1676 = icmp eq i64 %1675, 0
  %1677 = load i64, ptr %133, align 8, !tbaa !22
  br i1 %1676, label %1678, label %1693

1678:                                             ; preds = %1651
  %1679 = icmp slt i64 %1677, 0
  br i1 %1679, label %1684, label %1680

1680:                                             ; preds = %1678
  %1681 = getelementptr inbounds nuw i8, ptr %1133, i64 352
  %1682 = getelementptr inbounds nuw i8, ptr %1133, i64 2064
  %1683 = load <2 x double>, ptr %1681, align 16, !tbaa !26
  br label %1686

1684:                                             ; preds = %1686, %1678
  %1685 = getelementptr inbounds nuw i8, ptr %1133, i64 1456
  store <2 x double> %1670, ptr %1685, align 16, !tbaa !26
  br label %1820

1686:                                             ; preds = %1680, %1686
  %1687 = phi i64 [ 0, %1680 ], [ %1690, %1686 ]
  %1688 = load ptr, ptr %1682, align 16, !tbaa !75
  %1689 = getelementptr inbounds nuw <2 x double>, ptr %1688, i64 %1687
  store <2 x double> %1683, ptr %1689, align 16, !tbaa !26
  %1690 = add nuw nsw i64 %1687, 1
  %1691 = load i64, ptr %133, align 8, !tbaa !22
  %1692 = icmp slt i64 %1687, %1691
  br i1 %1692, label %1686, label %1684, !llvm.loop !76

1693:                                             ; preds = %1651
  %1694 = load <2 x double>, ptr %1193, align 16, !tbaa !26
  %1695 = load <2 x double>, ptr %1242, align 16, !tbaa !26
  %1696 = getelementptr inbounds nuw i8, ptr %1133, i64 320
  %1697 = load <2 x double>, ptr %1696, align 16, !tbaa !26
  %1698 = fmul <2 x double> %1695, %1697
  %1699 = load <2 x double>, ptr %1133, align 16, !tbaa !26
  %1700 = fsub <2 x double> %1699, %1694
  %1701 = sitofp i64 %1677 to double
  %1702 = insertelement <2 x double> poison, double %1701, i64 0
  %1703 = shufflevector <2 x double> %1702, <2 x double> poison, <2 x i32> zeroinitializer
  %1704 = fdiv <2 x double> %1700, %1703
  %1705 = load <2 x double>, ptr %1375, align 16, !tbaa !26
  %1706 = load <2 x double>, ptr %1377, align 16, !tbaa !26
  %1707 = getelementptr inbounds nuw i8, ptr %1133, i64 352
  %1708 = load <2 x double>, ptr %1707, align 16, !tbaa !26
  %1709 = getelementptr inbounds nuw i8, ptr %1133, i64 2064
  %1710 = load ptr, ptr %1709, align 16, !tbaa !75
  %1711 = getelementptr inbounds <2 x double>, ptr %1710, i64 %1677
  store <2 x double> %1708, ptr %1711, align 16, !tbaa !26
  %1712 = icmp sgt i64 %1677, 0
  br i1 %1712, label %1713, label %1804

1713:                                             ; preds = %1693
  %1714 = fneg <2 x double> %1698
  %1715 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1714, <2 x double> %1706, <2 x double> %1705)
  %1716 = fsub <2 x double> splat (double 1.000000e+00), %1706
  %1717 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1698, <2 x double> %1716, <2 x double> %1705)
  %1718 = getelementptr inbounds nuw i8, ptr %1133, i64 2072
  %1719 = getelementptr inbounds nuw i8, ptr %1133, i64 2080
  %1720 = getelementptr inbounds nuw i8, ptr %1133, i64 192
  %1721 = fmul <2 x double> %1698, splat (double -5.000000e-01)
  %1722 = getelementptr inbounds nuw i8, ptr %1133, i64 2040
  %1723 = getelementptr inbounds nuw i8, ptr %1133, i64 2048
  %1724 = getelementptr inbounds nuw i8, ptr %1133, i64 2056
  br label %1725

1725:                                             ; preds = %1713, %1779
  %1726 = phi <2 x double> [ %1717, %1713 ], [ %1781, %1779 ]
  %1727 = phi <2 x double> [ %1715, %1713 ], [ %1782, %1779 ]
  %1728 = phi <2 x double> [ %1667, %1713 ], [ %1797, %1779 ]
  %1729 = phi <2 x double> [ zeroinitializer, %1713 ], [ %1800, %1779 ]
  %1730 = phi <2 x double> [ %1708, %1713 ], [ %1743, %1779 ]
  %1731 = phi i64 [ %1677, %1713 ], [ %1732, %1779 ]
  %1732 = add nsw i64 %1731, -1
  %1733 = uitofp nneg i64 %1732 to double
  %1734 = insertelement <2 x double> poison, double %1733, i64 0
  %1735 = shufflevector <2 x double> %1734, <2 x double> poison, <2 x i32> zeroinitializer
  %1736 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1735, <2 x double> %1704, <2 x double> %1694)
  %1737 = load <2 x double>, ptr %1243, align 16, !tbaa !26
  %1738 = load <2 x double>, ptr %1245, align 16, !tbaa !26
  %1739 = load <2 x double>, ptr %1247, align 16, !tbaa !26
  %1740 = load <2 x double>, ptr %1249, align 16, !tbaa !26
  %1741 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1736, <2 x double> %1740, <2 x double> %1739)
  %1742 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1736, <2 x double> %1741, <2 x double> %1738)
  %1743 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1736, <2 x double> %1742, <2 x double> %1737)
  %1744 = load <2 x double>, ptr %1177, align 16, !tbaa !26
  %1745 = load <2 x double>, ptr %1163, align 16, !tbaa !26
  %1746 = load ptr, ptr %1718, align 8, !tbaa !49
  %1747 = getelementptr inbounds nuw <2 x double>, ptr %1746, i64 %1732
  %1748 = load <2 x double>, ptr %1747, align 16, !tbaa !26
  %1749 = fmul <2 x double> %1745, %1748
  %1750 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1744, <2 x double> %1743, <2 x double> %1749)
  %1751 = load <2 x double>, ptr %1167, align 16, !tbaa !26
  %1752 = load ptr, ptr %1719, align 16, !tbaa !59
  %1753 = getelementptr inbounds nuw <2 x double>, ptr %1752, i64 %1732
  %1754 = load <2 x double>, ptr %1753, align 16, !tbaa !26
  %1755 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1751, <2 x double> %1754, <2 x double> %1750)
  %1756 = fmul <2 x double> %1755, splat (double 5.000000e-01)
  %1757 = icmp eq i64 %1731, 1
  br i1 %1757, label %1773, label %1758

1758:                                             ; preds = %1725
  %1759 = load <2 x double>, ptr %1720, align 16, !tbaa !26
  %1760 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1756, <2 x double> %1759, <2 x double> %1721)
  %1761 = load <2 x double>, ptr %1318, align 16, !tbaa !26
  %1762 = fmul <2 x double> %1703, %1761
  %1763 = load <2 x double>, ptr %1264, align 16, !tbaa !26
  %1764 = load <2 x double>, ptr %1266, align 16, !tbaa !26
  %1765 = load <2 x double>, ptr %1268, align 16, !tbaa !26
  %1766 = load <2 x double>, ptr %1270, align 16, !tbaa !26
  %1767 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1736, <2 x double> %1766, <2 x double> %1765)
  %1768 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1736, <2 x double> %1767, <2 x double> %1764)
  %1769 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1736, <2 x double> %1768, <2 x double> %1763)
  %1770 = fmul <2 x double> %1762, %1769
  %1771 = fsub <2 x double> %1770, %1760
  %1772 = fadd <2 x double> %1760, %1770
  br label %1779

1773:                                             ; preds = %1725
  %1774 = load <2 x double>, ptr %1372, align 16, !tbaa !26
  %1775 = load <2 x double>, ptr %1720, align 16, !tbaa !26
  %1776 = fmul <2 x double> %1756, splat (double -2.000000e+00)
  %1777 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1776, <2 x double> %1775, <2 x double> %1774)
  %1778 = fadd <2 x double> %1698, %1777
  br label %1779

1779:                                             ; preds = %1773, %1758
  %1780 = phi <2 x double> [ %1759, %1758 ], [ %1775, %1773 ]
  %1781 = phi <2 x double> [ %1771, %1758 ], [ %1778, %1773 ]
  %1782 = phi <2 x double> [ %1772, %1758 ], [ %1774, %1773 ]
  %1783 = fsub <2 x double> %1730, %1743
  %1784 = fmul <2 x double> %1744, %1783
  %1785 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1784, <2 x double> %1780, <2 x double> %1726)
  %1786 = fadd <2 x double> %1782, %1785
  %1787 = fneg <2 x double> %1727
  %1788 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1787, <2 x double> %1729, <2 x double> %1786)
  %1789 = fdiv <2 x double> splat (double 1.000000e+00), %1788
  %1790 = load ptr, ptr %1709, align 16, !tbaa !75
  %1791 = getelementptr inbounds nuw <2 x double>, ptr %1790, i64 %1732
  store <2 x double> %1743, ptr %1791, align 16, !tbaa !26
  %1792 = load ptr, ptr %1722, align 8, !tbaa !62
  %1793 = getelementptr inbounds nuw <2 x double>, ptr %1792, i64 %1732
  %1794 = load <2 x double>, ptr %1793, align 16, !tbaa !26
  %1795 = fneg <2 x double> %1794
  %1796 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1727, <2 x double> %1728, <2 x double> %1795)
  %1797 = fmul <2 x double> %1789, %1796
  %1798 = load ptr, ptr %1723, align 16, !tbaa !77
  %1799 = getelementptr inbounds nuw <2 x double>, ptr %1798, i64 %1732
  store <2 x double> %1797, ptr %1799, align 16, !tbaa !26
  %1800 = fmul <2 x double> %1781, %1789
  %1801 = load ptr, ptr %1724, align 8, !tbaa !78
  %1802 = getelementptr inbounds nuw <2 x double>, ptr %1801, i64 %1732
  store <2 x double> %1800, ptr %1802, align 16, !tbaa !26
  %1803 = icmp samesign ugt i64 %1731, 1
  br i1 %1803, label %1725, label %1804, !llvm.loop !79

1804:                                             ; preds = %1779, %1693
  %1805 = load <2 x i64>, ptr %1214, align 16, !tbaa !26
  %1806 = load <2 x double>, ptr %1372, align 16, !tbaa !26
  %1807 = getelementptr inbounds nuw i8, ptr %1133, i64 2048
  %1808 = load ptr, ptr %1807, align 16, !tbaa !77
  %1809 = load <2 x double>, ptr %1808, align 16, !tbaa !26
  %1810 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1806, <2 x double> %1809, <2 x double> %1663)
  %1811 = icmp eq <2 x i64> %1805, zeroinitializer
  %1812 = select <2 x i1> %1811, <2 x double> %1670, <2 x double> %1810
  %1813 = getelementptr inbounds nuw i8, ptr %1133, i64 1456
  store <2 x double> %1812, ptr %1813, align 16, !tbaa !26
  %1814 = getelementptr inbounds nuw i8, ptr %1133, i64 2056
  %1815 = load ptr, ptr %1814, align 8, !tbaa !78
  %1816 = load <2 x double>, ptr %1815, align 16, !tbaa !26
  %1817 = fsub <2 x double> splat (double 1.000000e+00), %1816
  %1818 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1806, <2 x double> %1817, <2 x double> %1665)
  %1819 = select <2 x i1> %1811, <2 x double> %1673, <2 x double> %1818
  br label %1820

1820:                                             ; preds = %1684, %1804
  %1821 = phi <2 x double> [ %1673, %1684 ], [ %1819, %1804 ]
  %1822 = getelementptr inbounds nuw i8, ptr %1133, i64 1472
  store <2 x double> %1821, ptr %1822, align 16, !tbaa !26
  %1823 = add nuw nsw i64 %1131, 1
  %1824 = load i64, ptr %157, align 8, !tbaa !20
  %1825 = icmp slt i64 %1823, %1824
  br i1 %1825, label %1130, label %1127, !llvm.loop !80

1826:                                             ; preds = %1926, %1125, %1127
  %1827 = phi <2 x double> [ %1126, %1125 ], [ %1128, %1127 ], [ %1128, %1926 ]
  %1828 = fcmp ogt <2 x double> %1827, zeroinitializer
  %1829 = bitcast <2 x i1> %1828 to i2
  %1830 = icmp eq i2 %1829, 0
  br i1 %1830, label %1933, label %1930

1831:                                             ; preds = %1127, %1926
  %1832 = phi i64 [ %1927, %1926 ], [ %1824, %1127 ]
  %1833 = phi i64 [ %1928, %1926 ], [ 0, %1127 ]
  %1834 = load ptr, ptr %142, align 8, !tbaa !28
  %1835 = getelementptr inbounds nuw %struct.Piece, ptr %1834, i64 %1833
  %1836 = getelementptr inbounds nuw i8, ptr %1835, i64 1872
  %1837 = load <2 x i64>, ptr %1836, align 16, !tbaa !26
  %1838 = getelementptr inbounds nuw i8, ptr %1835, i64 560
  %1839 = load <2 x double>, ptr %1838, align 16, !tbaa !26
  %1840 = fcmp ogt <2 x double> %1839, zeroinitializer
  %1841 = select <2 x i1> %1840, <2 x i64> %1837, <2 x i64> zeroinitializer
  %1842 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1841)
  %1843 = icmp eq i64 %1842, 0
  br i1 %1843, label %1926, label %1844

1844:                                             ; preds = %1831
  %1845 = load <2 x double>, ptr %180, align 16, !tbaa !26
  %1846 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1845, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %1847 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1845, <2 x double> %1846, <2 x double> splat (double 0x4142F8368A3D70A4))
  %1848 = load <2 x double>, ptr %181, align 16, !tbaa !26
  %1849 = getelementptr inbounds nuw i8, ptr %1835, i64 1456
  %1850 = load <2 x double>, ptr %1849, align 16, !tbaa !26
  %1851 = getelementptr inbounds nuw i8, ptr %1835, i64 1472
  %1852 = load <2 x double>, ptr %1851, align 16, !tbaa !26
  %1853 = fdiv <2 x double> %1850, %1852
  %1854 = fcmp olt <2 x double> %1853, %1845
  %1855 = select <2 x i1> %1854, <2 x double> %1853, <2 x double> %1845
  %1856 = getelementptr inbounds nuw i8, ptr %1835, i64 1392
  %1857 = load <2 x double>, ptr %1856, align 16, !tbaa !26
  %1858 = fcmp olt <2 x double> %1857, %1855
  %1859 = select <2 x i1> %1858, <2 x double> %1857, <2 x double> %1855
  %1860 = fneg <2 x double> %1852
  %1861 = getelementptr inbounds nuw i8, ptr %1835, i64 1776
  %1862 = load <2 x double>, ptr %1861, align 16, !tbaa !26
  br label %1866

1863:                                             ; preds = %1866
  %1864 = getelementptr inbounds nuw i8, ptr %1835, i64 1488
  store <2 x double> %1917, ptr %1864, align 16, !tbaa !26
  %1865 = load i64, ptr %157, align 8, !tbaa !20
  br label %1926

1866:                                             ; preds = %1844, %1866
  %1867 = phi <2 x i64> [ %1841, %1844 ], [ %1920, %1866 ]
  %1868 = phi i32 [ 0, %1844 ], [ %1921, %1866 ]
  %1869 = phi <2 x double> [ %1859, %1844 ], [ %1917, %1866 ]
  %1870 = fadd <2 x double> %1869, splat (double 2.731500e+02)
  %1871 = fcmp ogt <2 x double> %1869, zeroinitializer
  %1872 = select <2 x i1> %1871, <2 x double> %1869, <2 x double> zeroinitializer
  %1873 = fadd <2 x double> %1872, splat (double 2.731500e+02)
  %1874 = fadd <2 x double> %1873, splat (double 0xC08451671D164BD4)
  %1875 = fdiv <2 x double> splat (double 0x3FCE88FD35E8A60E), %1874
  %1876 = fsub <2 x double> %1873, %1875
  %1877 = fadd <2 x double> %1876, splat (double 0x40923C3565924845)
  %1878 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1876, <2 x double> %1877, <2 x double> splat (double 0xC12619EA558539E6))
  %1879 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1876, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> splat (double 0x40C77A698FD9BCCA))
  %1880 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1876, <2 x double> %1879, <2 x double> splat (double 0xC148A99584203885))
  %1881 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1876, <2 x double> splat (double 0x402DD4891DBECC6B), <2 x double> splat (double 0xC0B2D7440748F0B3))
  %1882 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1876, <2 x double> %1881, <2 x double> splat (double 0x4118B9E59F2691E5))
  %1883 = fmul <2 x double> %1882, splat (double 2.000000e+00)
  %1884 = fmul <2 x double> %1878, splat (double 4.000000e+00)
  %1885 = fneg <2 x double> %1882
  %1886 = fmul <2 x double> %1884, %1885
  %1887 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1880, <2 x double> %1880, <2 x double> %1886)
  %1888 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1887)
  %1889 = fsub <2 x double> %1888, %1880
  %1890 = fdiv <2 x double> %1883, %1889
  %1891 = fmul <2 x double> %1890, %1890
  %1892 = fmul <2 x double> %1891, splat (double 1.000000e+06)
  %1893 = fmul <2 x double> %1891, %1892
  %1894 = fmul <2 x double> %1870, splat (double 4.615260e+02)
  %1895 = fdiv <2 x double> %1893, %1894
  %1896 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1860, <2 x double> %1869, <2 x double> %1850)
  %1897 = fsub <2 x double> %1895, %1848
  %1898 = fcmp ogt <2 x double> %1897, zeroinitializer
  %1899 = select <2 x i1> %1898, <2 x double> %1897, <2 x double> zeroinitializer
  %1900 = fmul <2 x double> %1847, %1899
  %1901 = fdiv <2 x double> %1900, %1862
  %1902 = fsub <2 x double> %1896, %1901
  %1903 = fmul <2 x double> %1847, %1895
  %1904 = fdiv <2 x double> %1847, %1894
  %1905 = fadd <2 x double> %1904, splat (double -1.000000e+00)
  %1906 = fmul <2 x double> %1905, %1903
  %1907 = fdiv <2 x double> %1906, %1870
  %1908 = fdiv <2 x double> %1907, %1862
  %1909 = fcmp ule <2 x double> %1895, %1848
  %1910 = select <2 x i1> %1909, <2 x double> zeroinitializer, <2 x double> %1908
  %1911 = fsub <2 x double> %1860, %1910
  %1912 = fdiv <2 x double> %1902, %1911
  %1913 = fsub <2 x double> %1869, %1912
  %1914 = fcmp olt <2 x double> %1913, %1855
  %1915 = select <2 x i1> %1914, <2 x double> %1913, <2 x double> %1855
  %1916 = icmp eq <2 x i64> %1867, zeroinitializer
  %1917 = select <2 x i1> %1916, <2 x double> %1869, <2 x double> %1915
  %1918 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %1912)
  %1919 = fcmp oge <2 x double> %1918, splat (double 0x3EB0C6F7A0B5ED8D)
  %1920 = select <2 x i1> %1919, <2 x i64> %1867, <2 x i64> zeroinitializer
  %1921 = add nuw nsw i32 %1868, 1
  %1922 = icmp samesign ult i32 %1868, 7
  %1923 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %1920)
  %1924 = icmp ne i64 %1923, 0
  %1925 = select i1 %1922, i1 %1924, i1 false
  br i1 %1925, label %1866, label %1863, !llvm.loop !81

1926:                                             ; preds = %1831, %1863
  %1927 = phi i64 [ %1832, %1831 ], [ %1865, %1863 ]
  %1928 = add nuw nsw i64 %1833, 1
  %1929 = icmp slt i64 %1928, %1927
  br i1 %1929, label %1831, label %1826, !llvm.loop !82

1930:                                             ; preds = %1826
  %1931 = sext <2 x i1> %1828 to <2 x i64>
  %1932 = tail call fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1, <2 x i64> noundef %1931) #7
  br label %1933

1933:                                             ; preds = %1826, %1930
  %1934 = phi <2 x double> [ %1932, %1930 ], [ zeroinitializer, %1826 ]
  %1935 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %1936 = fcmp ogt <2 x double> %1935, zeroinitializer
  %1937 = sext <2 x i1> %1936 to <2 x i64>
  %1938 = xor <2 x i64> %1937, splat (i64 -1)
  %1939 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %1940 = fcmp oeq <2 x double> %1939, splat (double 1.000000e+00)
  %1941 = fcmp oeq <2 x double> %1939, splat (double 2.000000e+00)
  %1942 = or <2 x i1> %1940, %1941
  %1943 = select <2 x i1> %1942, <2 x i64> %1938, <2 x i64> zeroinitializer
  %1944 = xor <2 x i64> %1943, %1937
  %1945 = load <2 x double>, ptr %180, align 16, !tbaa !26
  %1946 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %1947 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %1948 = icmp eq <2 x i64> %1944, splat (i64 -1)
  %1949 = select <2 x i1> %1948, <2 x double> %1947, <2 x double> %1946
  %1950 = bitcast <2 x i1> %1936 to i2
  %1951 = icmp eq i2 %1950, 0
  br i1 %1951, label %1983, label %1952

1952:                                             ; preds = %1933
  %1953 = select <2 x i1> %1936, <2 x double> %1934, <2 x double> %1949
  %1954 = fmul <2 x double> %1953, splat (double 0x3EB0C6F7A0B5ED8D)
  %1955 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1954)
  %1956 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1955)
  %1957 = fmul <2 x double> %1956, %1956
  %1958 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1956, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %1957)
  %1959 = fadd <2 x double> %1958, splat (double 0x402DD4891DBECC6B)
  %1960 = fmul <2 x double> %1956, splat (double 0x40C77A698FD9BCCA)
  %1961 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1957, <2 x double> splat (double 0x40923C3565924845), <2 x double> %1960)
  %1962 = fadd <2 x double> %1961, splat (double 0xC0B2D7440748F0B3)
  %1963 = fmul <2 x double> %1956, splat (double 0xC148A99584203885)
  %1964 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1957, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %1963)
  %1965 = fadd <2 x double> %1964, splat (double 0x4118B9E59F2691E5)
  %1966 = fmul <2 x double> %1965, splat (double 2.000000e+00)
  %1967 = fneg <2 x double> %1962
  %1968 = fmul <2 x double> %1959, splat (double 4.000000e+00)
  %1969 = fneg <2 x double> %1965
  %1970 = fmul <2 x double> %1968, %1969
  %1971 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1962, <2 x double> %1962, <2 x double> %1970)
  %1972 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1971)
  %1973 = fsub <2 x double> %1967, %1972
  %1974 = fdiv <2 x double> %1966, %1973
  %1975 = fadd <2 x double> %1974, splat (double 0x408451671D164BD4)
  %1976 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1974, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %1977 = fmul <2 x double> %1976, splat (double -4.000000e+00)
  %1978 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1975, <2 x double> %1975, <2 x double> %1977)
  %1979 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %1978)
  %1980 = fsub <2 x double> %1975, %1979
  %1981 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1980, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %1982 = select <2 x i1> %1936, <2 x double> %1981, <2 x double> %1945
  br label %1983

1983:                                             ; preds = %1952, %1933
  %1984 = phi <2 x double> [ %1953, %1952 ], [ %1949, %1933 ]
  %1985 = phi <2 x double> [ %1982, %1952 ], [ %1945, %1933 ]
  %1986 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %1987 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %1988 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %1989 = load <2 x double>, ptr %185, align 16, !tbaa !26
  %1990 = fmul <2 x double> %1988, %1989
  %1991 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1986, <2 x double> %1987, <2 x double> %1990)
  %1992 = load <2 x double>, ptr %186, align 16, !tbaa !26
  %1993 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %1994 = load <2 x double>, ptr %188, align 16, !tbaa !26
  %1995 = fneg <2 x double> %1991
  %1996 = fmul <2 x double> %1994, %1995
  %1997 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1992, <2 x double> %1993, <2 x double> %1996)
  %1998 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %1999 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1994, <2 x double> %1998, <2 x double> %1992)
  %2000 = fdiv <2 x double> %1997, %1999
  %2001 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %2002 = select <2 x i1> %1948, <2 x double> %2001, <2 x double> %1946
  store <2 x double> %2002, ptr %189, align 16, !tbaa !26
  %2003 = load <2 x double>, ptr %190, align 16, !tbaa !26
  %2004 = select <2 x i1> %1948, <2 x double> %2003, <2 x double> %2000
  store <2 x double> %2004, ptr %190, align 16, !tbaa !26
  store <2 x double> %1984, ptr %183, align 16, !tbaa !26
  %2005 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %2006 = and <2 x i64> %2005, %1943
  %2007 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2006)
  %2008 = icmp eq i64 %2007, 0
  br i1 %2008, label %2475, label %2009

2009:                                             ; preds = %1983
  %2010 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %2011 = load <2 x double>, ptr %192, align 16, !tbaa !26
  %2012 = fmul <2 x double> %1988, %2011
  %2013 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1986, <2 x double> %2010, <2 x double> %2012)
  %2014 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %2015 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2016 = fdiv <2 x double> %2014, %2015
  %2017 = fmul <2 x double> %1946, splat (double 3.000000e-01)
  %2018 = load <2 x double>, ptr %195, align 16, !tbaa !26
  %2019 = fadd <2 x double> %1946, %2018
  %2020 = fadd <2 x double> %2019, splat (double 2.000000e+05)
  %2021 = fmul <2 x double> %2015, splat (double 2.870530e+02)
  %2022 = fdiv <2 x double> %1946, %2021
  %2023 = fcmp ogt <2 x double> %1984, %2017
  %2024 = select <2 x i1> %2023, <2 x double> %1984, <2 x double> %2017
  %2025 = fcmp olt <2 x double> %2024, %2020
  %2026 = select <2 x i1> %2025, <2 x double> %2024, <2 x double> %2020
  %2027 = icmp eq <2 x i64> %1943, zeroinitializer
  %2028 = select <2 x i1> %2027, <2 x double> %1984, <2 x double> %2026
  %2029 = fdiv <2 x double> %2002, splat (double 2.870530e+02)
  %2030 = fmul <2 x double> %2022, splat (double 2.000000e+00)
  %2031 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2030)
  br label %2032

2032:                                             ; preds = %2261, %2009
  %2033 = phi <2 x double> [ %1985, %2009 ], [ %2067, %2261 ]
  %2034 = phi <2 x double> [ %2017, %2009 ], [ %2418, %2261 ]
  %2035 = phi <2 x double> [ %2020, %2009 ], [ %2415, %2261 ]
  %2036 = phi <2 x i64> [ %2006, %2009 ], [ %2430, %2261 ]
  %2037 = phi i32 [ 0, %2009 ], [ %2435, %2261 ]
  %2038 = phi <2 x double> [ %2028, %2009 ], [ %2432, %2261 ]
  %2039 = fmul <2 x double> %2038, splat (double 0x3EB0C6F7A0B5ED8D)
  %2040 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2039)
  %2041 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2040)
  %2042 = fmul <2 x double> %2041, %2041
  %2043 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2041, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2042)
  %2044 = fadd <2 x double> %2043, splat (double 0x402DD4891DBECC6B)
  %2045 = fmul <2 x double> %2041, splat (double 0x40C77A698FD9BCCA)
  %2046 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2042, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2045)
  %2047 = fadd <2 x double> %2046, splat (double 0xC0B2D7440748F0B3)
  %2048 = fmul <2 x double> %2041, splat (double 0xC148A99584203885)
  %2049 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2042, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2048)
  %2050 = fadd <2 x double> %2049, splat (double 0x4118B9E59F2691E5)
  %2051 = fmul <2 x double> %2050, splat (double 2.000000e+00)
  %2052 = fneg <2 x double> %2047
  %2053 = fmul <2 x double> %2044, splat (double 4.000000e+00)
  %2054 = fneg <2 x double> %2050
  %2055 = fmul <2 x double> %2053, %2054
  %2056 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2047, <2 x double> %2047, <2 x double> %2055)
  %2057 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2056)
  %2058 = fsub <2 x double> %2052, %2057
  %2059 = fdiv <2 x double> %2051, %2058
  %2060 = fadd <2 x double> %2059, splat (double 0x408451671D164BD4)
  %2061 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2059, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2062 = fmul <2 x double> %2061, splat (double -4.000000e+00)
  %2063 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2060, <2 x double> %2060, <2 x double> %2062)
  %2064 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2063)
  %2065 = fsub <2 x double> %2060, %2064
  %2066 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2065, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2067 = select <2 x i1> %2027, <2 x double> %2033, <2 x double> %2066
  %2068 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2067, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2069 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2067, <2 x double> %2068, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2070 = load i64, ptr %157, align 8, !tbaa !20, !noalias !83
  %2071 = icmp sgt i64 %2070, 0
  br i1 %2071, label %2072, label %2261

2072:                                             ; preds = %2032
  %2073 = fdiv <2 x double> splat (double 1.000000e+00), %2069
  %2074 = fadd <2 x double> %2067, splat (double 1.000000e-09)
  br label %2075

2075:                                             ; preds = %2072, %2185
  %2076 = phi <2 x double> [ zeroinitializer, %2072 ], [ %2257, %2185 ]
  %2077 = phi <2 x double> [ zeroinitializer, %2072 ], [ %2256, %2185 ]
  %2078 = phi i64 [ 0, %2072 ], [ %2258, %2185 ]
  %2079 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !83
  %2080 = getelementptr inbounds nuw %struct.Piece, ptr %2079, i64 %2078
  %2081 = getelementptr inbounds nuw i8, ptr %2080, i64 1456
  %2082 = load <2 x double>, ptr %2081, align 16, !tbaa !26, !noalias !83
  %2083 = getelementptr inbounds nuw i8, ptr %2080, i64 1472
  %2084 = load <2 x double>, ptr %2083, align 16, !tbaa !26, !noalias !83
  %2085 = getelementptr inbounds nuw i8, ptr %2080, i64 1824
  %2086 = load <2 x double>, ptr %2085, align 16, !tbaa !26, !noalias !83
  %2087 = fcmp ule <2 x double> %2086, splat (double 1.000000e+00)
  %2088 = fmul <2 x double> %2067, %2084
  %2089 = fcmp ogt <2 x double> %2082, %2088
  %2090 = and <2 x i1> %2087, %2089
  %2091 = fneg <2 x double> %2084
  %2092 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2091, <2 x double> %2067, <2 x double> %2082)
  %2093 = fmul <2 x double> %2073, %2092
  %2094 = select <2 x i1> %2090, <2 x double> %2093, <2 x double> zeroinitializer
  %2095 = fmul <2 x double> %2073, %2091
  %2096 = fdiv <2 x double> %2082, %2084
  %2097 = select <2 x i1> %2090, <2 x double> %2067, <2 x double> %2096
  %2098 = getelementptr inbounds nuw i8, ptr %2080, i64 1872
  %2099 = load <2 x i64>, ptr %2098, align 16, !tbaa !26, !noalias !83
  %2100 = getelementptr inbounds nuw i8, ptr %2080, i64 560
  %2101 = load <2 x double>, ptr %2100, align 16, !tbaa !26, !noalias !83
  %2102 = fcmp ule <2 x double> %2101, zeroinitializer
  %2103 = xor <2 x i1> %2087, splat (i1 true)
  %2104 = select <2 x i1> %2103, <2 x i1> splat (i1 true), <2 x i1> %2102
  %2105 = getelementptr inbounds nuw i8, ptr %2080, i64 1488
  %2106 = load <2 x double>, ptr %2105, align 16, !tbaa !26, !noalias !83
  %2107 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2091, <2 x double> %2106, <2 x double> %2082)
  %2108 = fcmp ogt <2 x double> %2107, zeroinitializer
  %2109 = select <2 x i1> %2108, <2 x double> %2107, <2 x double> zeroinitializer
  %2110 = fmul <2 x double> %2073, %2109
  %2111 = icmp eq <2 x i64> %2099, zeroinitializer
  %2112 = select <2 x i1> %2104, <2 x i1> splat (i1 true), <2 x i1> %2111
  %2113 = select <2 x i1> %2112, <2 x double> %2094, <2 x double> %2110
  %2114 = select <2 x i1> %2112, <2 x double> %2097, <2 x double> %2106
  %2115 = select <2 x i1> %2112, <2 x i1> %2090, <2 x i1> zeroinitializer
  %2116 = select <2 x i1> %2115, <2 x double> %2095, <2 x double> zeroinitializer
  %2117 = load i64, ptr %132, align 16, !tbaa !21, !noalias !86
  %2118 = sitofp i64 %2117 to double
  %2119 = insertelement <2 x double> poison, double %2118, i64 0
  %2120 = shufflevector <2 x double> %2119, <2 x double> poison, <2 x i32> zeroinitializer
  %2121 = icmp sgt i64 %2117, 0
  br i1 %2121, label %2122, label %2185

2122:                                             ; preds = %2075
  %2123 = getelementptr inbounds nuw i8, ptr %2080, i64 1944
  %2124 = load ptr, ptr %2123, align 8, !tbaa !71, !noalias !86
  %2125 = getelementptr inbounds nuw i8, ptr %2080, i64 1952
  %2126 = load ptr, ptr %2125, align 16, !tbaa !72, !noalias !86
  %2127 = getelementptr inbounds nuw i8, ptr %2080, i64 1888
  %2128 = load i64, ptr %2127, align 16, !tbaa !31, !noalias !86
  %2129 = getelementptr inbounds nuw i8, ptr %2080, i64 1968
  %2130 = getelementptr inbounds nuw i8, ptr %2080, i64 1960
  %2131 = getelementptr inbounds nuw i8, ptr %2080, i64 1976
  br label %2132

2132:                                             ; preds = %2122, %2167
  %2133 = phi <2 x i64> [ splat (i64 -1), %2122 ], [ %2147, %2167 ]
  %2134 = phi i64 [ %2117, %2122 ], [ %2138, %2167 ]
  %2135 = phi <2 x double> [ %2120, %2122 ], [ %2183, %2167 ]
  %2136 = phi <2 x double> [ zeroinitializer, %2122 ], [ %2179, %2167 ]
  %2137 = phi <2 x double> [ zeroinitializer, %2122 ], [ %2177, %2167 ]
  %2138 = add nsw i64 %2134, -1
  %2139 = getelementptr inbounds nuw <2 x double>, ptr %2124, i64 %2138
  %2140 = load <2 x double>, ptr %2139, align 16, !tbaa !26, !noalias !86
  %2141 = getelementptr inbounds nuw <2 x double>, ptr %2126, i64 %2138
  %2142 = load <2 x double>, ptr %2141, align 16, !tbaa !26, !noalias !86
  %2143 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2142, <2 x double> %2067, <2 x double> %2140)
  %2144 = fcmp ogt <2 x double> %2143, %2074
  %2145 = select <2 x i1> %2144, <2 x i64> %2133, <2 x i64> zeroinitializer
  %2146 = icmp sgt i64 %2134, %2128
  %2147 = select i1 %2146, <2 x i64> %2145, <2 x i64> zeroinitializer
  %2148 = icmp slt i64 %2134, %2117
  br i1 %2148, label %2149, label %2162

2149:                                             ; preds = %2132
  %2150 = load ptr, ptr %2129, align 16, !tbaa !69, !noalias !86
  %2151 = getelementptr inbounds nuw <2 x double>, ptr %2150, i64 %2134
  %2152 = load <2 x double>, ptr %2151, align 16, !tbaa !26, !noalias !86
  %2153 = fsub <2 x double> %2143, %2067
  %2154 = fmul <2 x double> %2153, %2152
  %2155 = icmp eq <2 x i64> %2147, %2133
  %2156 = select <2 x i1> %2155, <2 x double> zeroinitializer, <2 x double> %2154
  %2157 = fadd <2 x double> %2137, %2156
  %2158 = fadd <2 x double> %2142, splat (double -1.000000e+00)
  %2159 = fmul <2 x double> %2158, %2152
  %2160 = select <2 x i1> %2155, <2 x double> zeroinitializer, <2 x double> %2159
  %2161 = fadd <2 x double> %2136, %2160
  br label %2162

2162:                                             ; preds = %2149, %2132
  %2163 = phi <2 x double> [ %2157, %2149 ], [ %2137, %2132 ]
  %2164 = phi <2 x double> [ %2161, %2149 ], [ %2136, %2132 ]
  %2165 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2147)
  %2166 = icmp eq i64 %2165, 0
  br i1 %2166, label %2185, label %2167

2167:                                             ; preds = %2162
  %2168 = load ptr, ptr %2130, align 8, !tbaa !68, !noalias !86
  %2169 = getelementptr inbounds nuw <2 x double>, ptr %2168, i64 %2138
  %2170 = load <2 x double>, ptr %2169, align 16, !tbaa !26, !noalias !86
  %2171 = load ptr, ptr %2131, align 8, !tbaa !70, !noalias !86
  %2172 = getelementptr inbounds nuw <2 x double>, ptr %2171, i64 %2138
  %2173 = load <2 x double>, ptr %2172, align 16, !tbaa !26, !noalias !86
  %2174 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2173, <2 x double> %2067, <2 x double> %2170)
  %2175 = icmp eq <2 x i64> %2147, zeroinitializer
  %2176 = select <2 x i1> %2175, <2 x double> zeroinitializer, <2 x double> %2174
  %2177 = fadd <2 x double> %2163, %2176
  %2178 = select <2 x i1> %2175, <2 x double> zeroinitializer, <2 x double> %2173
  %2179 = fadd <2 x double> %2164, %2178
  %2180 = uitofp nneg i64 %2138 to double
  %2181 = insertelement <2 x double> poison, double %2180, i64 0
  %2182 = shufflevector <2 x double> %2181, <2 x double> poison, <2 x i32> zeroinitializer
  %2183 = select <2 x i1> %2175, <2 x double> %2135, <2 x double> %2182
  %2184 = icmp samesign ugt i64 %2134, 1
  br i1 %2184, label %2132, label %2185, !llvm.loop !89

2185:                                             ; preds = %2167, %2162, %2075
  %2186 = phi <2 x double> [ %2120, %2075 ], [ %2135, %2162 ], [ %2183, %2167 ]
  %2187 = phi <2 x double> [ zeroinitializer, %2075 ], [ %2163, %2162 ], [ %2177, %2167 ]
  %2188 = phi <2 x double> [ zeroinitializer, %2075 ], [ %2164, %2162 ], [ %2179, %2167 ]
  %2189 = getelementptr inbounds nuw i8, ptr %2080, i64 1520
  %2190 = load <2 x double>, ptr %2189, align 16, !tbaa !26, !noalias !83
  %2191 = getelementptr inbounds nuw i8, ptr %2080, i64 1376
  %2192 = load <2 x double>, ptr %2191, align 16, !tbaa !26, !noalias !83
  %2193 = getelementptr inbounds nuw i8, ptr %2080, i64 1760
  %2194 = load <2 x double>, ptr %2193, align 16, !tbaa !26, !noalias !83
  %2195 = fneg <2 x double> %2194
  %2196 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2190, <2 x double> %2192, <2 x double> %2195)
  %2197 = getelementptr inbounds nuw i8, ptr %2080, i64 1744
  %2198 = load <2 x double>, ptr %2197, align 16, !tbaa !26, !noalias !83
  %2199 = fadd <2 x double> %2190, %2198
  %2200 = getelementptr inbounds nuw i8, ptr %2080, i64 1840
  %2201 = load <2 x i64>, ptr %2200, align 16, !tbaa !26, !noalias !83
  %2202 = getelementptr inbounds nuw i8, ptr %2080, i64 2048
  %2203 = load ptr, ptr %2202, align 16, !tbaa !77, !noalias !83
  %2204 = load <2 x double>, ptr %2203, align 16, !tbaa !26, !noalias !83
  %2205 = fmul <2 x double> %2190, %2204
  %2206 = icmp eq <2 x i64> %2201, zeroinitializer
  %2207 = select <2 x i1> %2206, <2 x double> %2196, <2 x double> %2205
  %2208 = getelementptr inbounds nuw i8, ptr %2080, i64 2056
  %2209 = load ptr, ptr %2208, align 8, !tbaa !78, !noalias !83
  %2210 = load <2 x double>, ptr %2209, align 16, !tbaa !26, !noalias !83
  %2211 = fsub <2 x double> splat (double 1.000000e+00), %2210
  %2212 = fmul <2 x double> %2190, %2211
  %2213 = select <2 x i1> %2206, <2 x double> %2199, <2 x double> %2212
  %2214 = fneg <2 x double> %2213
  %2215 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2214, <2 x double> %2067, <2 x double> %2207)
  %2216 = fcmp olt <2 x double> %2186, %2120
  %2217 = and <2 x i1> %2087, %2216
  %2218 = fcmp ogt <2 x double> %2187, zeroinitializer
  %2219 = fcmp oge <2 x double> %2215, zeroinitializer
  %2220 = and <2 x i1> %2218, %2219
  %2221 = and <2 x i1> %2217, %2220
  %2222 = sext <2 x i1> %2221 to <2 x i64>
  %2223 = xor <2 x i64> %2222, splat (i64 -1)
  %2224 = fadd <2 x double> %2187, %2215
  %2225 = fcmp ogt <2 x double> %2224, zeroinitializer
  %2226 = and <2 x i1> %2217, %2225
  %2227 = select <2 x i1> %2226, <2 x i64> %2223, <2 x i64> zeroinitializer
  %2228 = or <2 x i64> %2227, %2222
  %2229 = fmul <2 x double> %2073, %2215
  %2230 = select <2 x i1> %2221, <2 x double> %2229, <2 x double> zeroinitializer
  %2231 = icmp eq <2 x i64> %2228, zeroinitializer
  %2232 = select <2 x i1> %2231, <2 x double> %2113, <2 x double> %2230
  %2233 = select <2 x i1> %2231, <2 x double> %2114, <2 x double> %2067
  %2234 = fsub <2 x double> %2188, %2213
  %2235 = fmul <2 x double> %2073, %2234
  %2236 = select <2 x i1> %2231, <2 x double> %2116, <2 x double> %2235
  %2237 = getelementptr inbounds nuw i8, ptr %2080, i64 1408
  store <2 x double> %2232, ptr %2237, align 16, !tbaa !26, !noalias !83
  %2238 = getelementptr inbounds nuw i8, ptr %2080, i64 1392
  store <2 x double> %2233, ptr %2238, align 16, !tbaa !26, !noalias !83
  %2239 = fmul <2 x double> %2073, %2187
  %2240 = fmul <2 x double> %2073, %2224
  %2241 = icmp eq <2 x i64> %2227, zeroinitializer
  %2242 = select <2 x i1> %2241, <2 x double> zeroinitializer, <2 x double> %2240
  %2243 = select <2 x i1> %2221, <2 x double> %2239, <2 x double> %2242
  %2244 = getelementptr inbounds nuw i8, ptr %2080, i64 1424
  store <2 x double> %2243, ptr %2244, align 16, !tbaa !26, !noalias !83
  %2245 = load i64, ptr %132, align 16, !tbaa !21, !noalias !83
  %2246 = sitofp i64 %2245 to double
  %2247 = insertelement <2 x double> poison, double %2246, i64 0
  %2248 = shufflevector <2 x double> %2247, <2 x double> poison, <2 x i32> zeroinitializer
  %2249 = select <2 x i1> %2231, <2 x double> %2248, <2 x double> %2186
  %2250 = getelementptr inbounds nuw i8, ptr %2080, i64 1440
  store <2 x double> %2249, ptr %2250, align 16, !tbaa !26, !noalias !83
  %2251 = getelementptr inbounds nuw i8, ptr %2080, i64 32
  %2252 = load <2 x double>, ptr %2251, align 16, !tbaa !26, !noalias !83
  %2253 = fadd <2 x double> %2232, %2243
  %2254 = fmul <2 x double> %2252, %2253
  %2255 = fmul <2 x double> %2252, %2236
  %2256 = fadd <2 x double> %2077, %2254
  %2257 = fadd <2 x double> %2076, %2255
  %2258 = add nuw nsw i64 %2078, 1
  %2259 = load i64, ptr %157, align 8, !tbaa !20, !noalias !83
  %2260 = icmp slt i64 %2258, %2259
  br i1 %2260, label %2075, label %2261, !llvm.loop !90

2261:                                             ; preds = %2185, %2032
  %2262 = phi <2 x double> [ zeroinitializer, %2032 ], [ %2256, %2185 ]
  %2263 = phi <2 x double> [ zeroinitializer, %2032 ], [ %2257, %2185 ]
  %2264 = fsub <2 x double> %2038, %2002
  %2265 = fcmp ogt <2 x double> %2264, zeroinitializer
  %2266 = select <2 x i1> %2265, <2 x double> %2264, <2 x double> zeroinitializer
  %2267 = fadd <2 x double> %2067, splat (double 2.731500e+02)
  %2268 = fdiv <2 x double> %2266, splat (double 4.615260e+02)
  %2269 = fadd <2 x double> %2029, %2268
  %2270 = load <2 x double>, ptr %194, align 16, !tbaa !26
  %2271 = fdiv <2 x double> %2269, %2270
  %2272 = fmul <2 x double> %2270, %2271
  %2273 = fdiv <2 x double> %2038, %2272
  %2274 = load <2 x double>, ptr %182, align 16, !tbaa !26, !noalias !91
  %2275 = fsub <2 x double> %2038, %2274
  %2276 = load <2 x double>, ptr %195, align 16, !tbaa !26, !noalias !91
  %2277 = fsub <2 x double> %2275, %2276
  %2278 = load <2 x double>, ptr %196, align 16, !tbaa !26, !noalias !91
  %2279 = load <2 x double>, ptr %151, align 16, !tbaa !26, !noalias !91
  %2280 = fcmp une <2 x double> %2279, splat (double 2.000000e+00)
  %2281 = load <2 x double>, ptr %197, align 16, !tbaa !26, !noalias !91
  %2282 = select <2 x i1> %2280, <2 x double> zeroinitializer, <2 x double> %2281
  %2283 = fadd <2 x double> %2278, %2282
  %2284 = fcmp ule <2 x double> %2275, zeroinitializer
  %2285 = fcmp ule <2 x double> %2283, zeroinitializer
  %2286 = or <2 x i1> %2284, %2285
  %2287 = fmul <2 x double> %2271, splat (double 2.000000e+00)
  %2288 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2287)
  %2289 = fmul <2 x double> %2288, %2283
  %2290 = fadd <2 x double> %2275, splat (double 2.000000e+02)
  %2291 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2290)
  %2292 = select <2 x i1> %2284, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2291
  %2293 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2275, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2294 = fmul <2 x double> %2293, %2289
  %2295 = fmul <2 x double> %2292, %2292
  %2296 = fmul <2 x double> %2292, %2295
  %2297 = fdiv <2 x double> %2294, %2296
  %2298 = fmul <2 x double> %2275, %2289
  %2299 = fdiv <2 x double> %2298, %2292
  %2300 = select <2 x i1> %2286, <2 x double> zeroinitializer, <2 x double> %2299
  %2301 = select <2 x i1> %2286, <2 x double> zeroinitializer, <2 x double> %2297
  %2302 = fcmp ule <2 x double> %2277, zeroinitializer
  %2303 = load <2 x double>, ptr %198, align 16, !tbaa !26, !noalias !91
  %2304 = fmul <2 x double> %2277, %2303
  %2305 = select <2 x i1> %2302, <2 x double> zeroinitializer, <2 x double> %2304
  %2306 = fadd <2 x double> %2305, %2300
  %2307 = select <2 x i1> %2302, <2 x double> zeroinitializer, <2 x double> %2303
  %2308 = fadd <2 x double> %2307, %2301
  %2309 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2310 = fsub <2 x double> %2274, %2038
  %2311 = fcmp ule <2 x double> %2310, zeroinitializer
  %2312 = fcmp ule <2 x double> %2309, zeroinitializer
  %2313 = or <2 x i1> %2311, %2312
  %2314 = fmul <2 x double> %2031, %2309
  %2315 = fadd <2 x double> %2310, splat (double 2.000000e+02)
  %2316 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2315)
  %2317 = select <2 x i1> %2311, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2316
  %2318 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2310, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double 2.000000e+02))
  %2319 = fmul <2 x double> %2318, %2314
  %2320 = fmul <2 x double> %2317, %2317
  %2321 = fmul <2 x double> %2317, %2320
  %2322 = fdiv <2 x double> %2319, %2321
  %2323 = fmul <2 x double> %2310, %2314
  %2324 = fdiv <2 x double> %2323, %2317
  %2325 = load <2 x double>, ptr %162, align 16, !tbaa !26, !noalias !94
  %2326 = load <2 x double>, ptr %184, align 16, !tbaa !26, !noalias !94
  %2327 = load <2 x double>, ptr %163, align 16, !tbaa !26, !noalias !94
  %2328 = load <2 x double>, ptr %185, align 16, !tbaa !26, !noalias !94
  %2329 = fmul <2 x double> %2327, %2328
  %2330 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2325, <2 x double> %2326, <2 x double> %2329)
  %2331 = load <2 x double>, ptr %188, align 16, !tbaa !26, !noalias !94
  %2332 = load <2 x double>, ptr %161, align 16, !tbaa !26, !noalias !94
  %2333 = load <2 x double>, ptr %186, align 16, !tbaa !26, !noalias !94
  %2334 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2331, <2 x double> %2332, <2 x double> %2333)
  %2335 = load <2 x double>, ptr %187, align 16, !tbaa !26, !noalias !94
  %2336 = fneg <2 x double> %2330
  %2337 = fmul <2 x double> %2331, %2336
  %2338 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2333, <2 x double> %2335, <2 x double> %2337)
  %2339 = fdiv <2 x double> %2338, %2334
  %2340 = fcmp ogt <2 x double> %2266, splat (double 2.000000e+03)
  %2341 = select <2 x i1> %2340, <2 x double> %2266, <2 x double> splat (double 2.000000e+03)
  %2342 = fmul <2 x double> %2341, splat (double 0x3EB0C6F7A0B5ED8D)
  %2343 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2342)
  %2344 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2343)
  %2345 = fmul <2 x double> %2344, %2344
  %2346 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2344, <2 x double> splat (double 0xC03112E7A2109AD5), <2 x double> %2345)
  %2347 = fadd <2 x double> %2346, splat (double 0x402DD4891DBECC6B)
  %2348 = fmul <2 x double> %2344, splat (double 0x40C77A698FD9BCCA)
  %2349 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2345, <2 x double> splat (double 0x40923C3565924845), <2 x double> %2348)
  %2350 = fadd <2 x double> %2349, splat (double 0xC0B2D7440748F0B3)
  %2351 = fmul <2 x double> %2344, splat (double 0xC148A99584203885)
  %2352 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2345, <2 x double> splat (double 0xC12619EA558539E6), <2 x double> %2351)
  %2353 = fadd <2 x double> %2352, splat (double 0x4118B9E59F2691E5)
  %2354 = fmul <2 x double> %2353, splat (double 2.000000e+00)
  %2355 = fneg <2 x double> %2350
  %2356 = fmul <2 x double> %2347, splat (double 4.000000e+00)
  %2357 = fneg <2 x double> %2353
  %2358 = fmul <2 x double> %2356, %2357
  %2359 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2350, <2 x double> %2350, <2 x double> %2358)
  %2360 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2359)
  %2361 = fsub <2 x double> %2355, %2360
  %2362 = fdiv <2 x double> %2354, %2361
  %2363 = fadd <2 x double> %2362, splat (double 0x408451671D164BD4)
  %2364 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2362, <2 x double> splat (double 0x408451671D164BD4), <2 x double> splat (double 0xBFCE88FD35E8A60E))
  %2365 = fmul <2 x double> %2364, splat (double -4.000000e+00)
  %2366 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2363, <2 x double> %2363, <2 x double> %2365)
  %2367 = tail call noundef <2 x double> @llvm.sqrt.v2f64(<2 x double> %2366)
  %2368 = fsub <2 x double> %2363, %2367
  %2369 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2368, <2 x double> splat (double 5.000000e-01), <2 x double> splat (double -2.731500e+02))
  %2370 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2369, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2371 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2369, <2 x double> %2370, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2372 = fadd <2 x double> %2369, splat (double 2.731500e+02)
  %2373 = fcmp ule <2 x double> %2369, %2339
  %2374 = load <2 x double>, ptr %200, align 16, !tbaa !26, !noalias !94
  %2375 = fmul <2 x double> %2334, %2374
  %2376 = fadd <2 x double> %2334, %2374
  %2377 = fdiv <2 x double> %2375, %2376
  %2378 = fdiv <2 x double> %2377, %2371
  %2379 = fmul <2 x double> %2372, splat (double 4.615260e+02)
  %2380 = fmul <2 x double> %2341, %2371
  %2381 = fmul <2 x double> %2369, %2374
  %2382 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2339, <2 x double> %2334, <2 x double> %2381)
  %2383 = fdiv <2 x double> %2382, %2376
  %2384 = select <2 x i1> %2373, <2 x double> %2339, <2 x double> %2383
  store <2 x double> %2384, ptr %190, align 16, !tbaa !26, !noalias !94
  %2385 = fsub <2 x double> %2369, %2339
  %2386 = fmul <2 x double> %2385, %2378
  %2387 = select <2 x i1> %2373, <2 x double> zeroinitializer, <2 x double> %2386
  %2388 = fmul <2 x double> %2267, splat (double 4.615260e+02)
  %2389 = fmul <2 x double> %2267, %2388
  %2390 = fmul <2 x double> %2038, %2069
  %2391 = fdiv <2 x double> %2389, %2390
  %2392 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2332, <2 x double> %2038, <2 x double> %2013)
  %2393 = fsub <2 x double> %2262, %2387
  %2394 = fmul <2 x double> %2393, splat (double -4.615260e+02)
  %2395 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2016, <2 x double> %2392, <2 x double> %2394)
  %2396 = fmul <2 x double> %2324, splat (double -2.870530e+02)
  %2397 = select <2 x i1> %2313, <2 x double> splat (double -0.000000e+00), <2 x double> %2396
  %2398 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2273, <2 x double> %2306, <2 x double> %2397)
  %2399 = fadd <2 x double> %2398, %2395
  %2400 = fneg <2 x double> %2372
  %2401 = fmul <2 x double> %2379, %2400
  %2402 = fdiv <2 x double> %2401, %2380
  %2403 = fmul <2 x double> %2402, %2378
  %2404 = select <2 x i1> %2373, <2 x double> splat (double -0.000000e+00), <2 x double> %2403
  %2405 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2263, <2 x double> %2391, <2 x double> %2404)
  %2406 = fmul <2 x double> %2405, splat (double -4.615260e+02)
  %2407 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2016, <2 x double> %2332, <2 x double> %2406)
  %2408 = fmul <2 x double> %2322, splat (double 2.870530e+02)
  %2409 = select <2 x i1> %2313, <2 x double> zeroinitializer, <2 x double> %2408
  %2410 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2273, <2 x double> %2308, <2 x double> %2409)
  %2411 = fadd <2 x double> %2410, %2407
  %2412 = fcmp ule <2 x double> %2399, zeroinitializer
  %2413 = fcmp olt <2 x double> %2035, %2038
  %2414 = select <2 x i1> %2412, <2 x i1> splat (i1 true), <2 x i1> %2413
  %2415 = select <2 x i1> %2414, <2 x double> %2035, <2 x double> %2038
  %2416 = fcmp ogt <2 x double> %2034, %2038
  %2417 = select <2 x i1> %2416, <2 x double> %2034, <2 x double> %2038
  %2418 = select <2 x i1> %2412, <2 x double> %2417, <2 x double> %2034
  %2419 = fdiv <2 x double> %2399, %2411
  %2420 = fsub <2 x double> %2038, %2419
  %2421 = fcmp uge <2 x double> %2418, %2420
  %2422 = fcmp uge <2 x double> %2420, %2415
  %2423 = or <2 x i1> %2421, %2422
  %2424 = fadd <2 x double> %2418, %2415
  %2425 = fmul <2 x double> %2424, splat (double 5.000000e-01)
  %2426 = select <2 x i1> %2423, <2 x double> %2425, <2 x double> %2420
  %2427 = fsub <2 x double> %2426, %2038
  %2428 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2427)
  %2429 = fcmp oge <2 x double> %2428, splat (double 2.000000e-01)
  %2430 = select <2 x i1> %2429, <2 x i64> %2036, <2 x i64> zeroinitializer
  %2431 = icmp eq <2 x i64> %2430, zeroinitializer
  %2432 = select <2 x i1> %2431, <2 x double> %2038, <2 x double> %2426
  %2433 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2430)
  %2434 = icmp ne i64 %2433, 0
  %2435 = add nuw nsw i32 %2037, 1
  %2436 = icmp samesign ult i32 %2037, 59
  %2437 = select i1 %2434, i1 %2436, i1 false
  br i1 %2437, label %2032, label %2438, !llvm.loop !97

2438:                                             ; preds = %2261
  %2439 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %2440 = load <2 x double>, ptr %201, align 16, !tbaa !26
  %2441 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %2442 = load <2 x double>, ptr %202, align 16, !tbaa !26
  %2443 = fmul <2 x double> %2441, %2442
  %2444 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2439, <2 x double> %2440, <2 x double> %2443)
  %2445 = load <2 x double>, ptr %199, align 16, !tbaa !26
  %2446 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %2447 = fsub <2 x double> %2446, %2432
  %2448 = fcmp ule <2 x double> %2447, zeroinitializer
  %2449 = fcmp ule <2 x double> %2445, zeroinitializer
  %2450 = or <2 x i1> %2449, %2448
  %2451 = fmul <2 x double> %2031, %2445
  %2452 = fadd <2 x double> %2447, splat (double 2.000000e+02)
  %2453 = tail call <2 x double> @llvm.sqrt.v2f64(<2 x double> %2452)
  %2454 = select <2 x i1> %2448, <2 x double> splat (double 0x402C48C6001F0AC0), <2 x double> %2453
  %2455 = fmul <2 x double> %2451, %2447
  %2456 = fdiv <2 x double> %2455, %2454
  %2457 = fmul <2 x double> %2456, splat (double 2.870530e+02)
  %2458 = select <2 x i1> %2450, <2 x double> zeroinitializer, <2 x double> %2457
  %2459 = fdiv <2 x double> %2458, %2016
  %2460 = fsub <2 x double> %2459, %2444
  %2461 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %2462 = load <2 x double>, ptr %193, align 16, !tbaa !26
  %2463 = fmul <2 x double> %2271, %2462
  %2464 = fdiv <2 x double> %2306, %2463
  %2465 = fadd <2 x double> %2461, %2464
  %2466 = fdiv <2 x double> %2460, %2465
  %2467 = fcmp ogt <2 x double> %2466, zeroinitializer
  %2468 = select <2 x i1> %2467, <2 x double> %2466, <2 x double> zeroinitializer
  %2469 = fcmp olt <2 x double> %2468, %2432
  %2470 = select <2 x i1> %2469, <2 x double> %2468, <2 x double> %2432
  %2471 = load <2 x double>, ptr %189, align 16, !tbaa !26
  %2472 = select <2 x i1> %2027, <2 x double> %2471, <2 x double> %2470
  store <2 x double> %2472, ptr %189, align 16, !tbaa !26
  %2473 = select <2 x i1> %2027, <2 x double> %2004, <2 x double> %2384
  store <2 x double> %2473, ptr %190, align 16, !tbaa !26
  store <2 x double> %2432, ptr %183, align 16, !tbaa !26
  store <2 x double> %2067, ptr %203, align 16, !tbaa !26
  %2474 = load i64, ptr %157, align 8, !tbaa !20
  br label %2645

2475:                                             ; preds = %1983
  store <2 x double> %1985, ptr %203, align 16, !tbaa !26
  %2476 = load i64, ptr %157, align 8, !tbaa !20, !noalias !98
  %2477 = icmp sgt i64 %2476, 0
  br i1 %2477, label %2478, label %2648

2478:                                             ; preds = %2475
  %2479 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1985, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2480 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %1985, <2 x double> %2479, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2481 = fdiv <2 x double> splat (double 1.000000e+00), %2480
  %2482 = fadd <2 x double> %1985, splat (double 1.000000e-09)
  br label %2483

2483:                                             ; preds = %2478, %2580
  %2484 = phi i64 [ 0, %2478 ], [ %2642, %2580 ]
  %2485 = load ptr, ptr %142, align 8, !tbaa !28, !noalias !98
  %2486 = getelementptr inbounds nuw %struct.Piece, ptr %2485, i64 %2484
  %2487 = getelementptr inbounds nuw i8, ptr %2486, i64 1456
  %2488 = load <2 x double>, ptr %2487, align 16, !tbaa !26, !noalias !98
  %2489 = getelementptr inbounds nuw i8, ptr %2486, i64 1472
  %2490 = load <2 x double>, ptr %2489, align 16, !tbaa !26, !noalias !98
  %2491 = getelementptr inbounds nuw i8, ptr %2486, i64 1824
  %2492 = load <2 x double>, ptr %2491, align 16, !tbaa !26, !noalias !98
  %2493 = fcmp ule <2 x double> %2492, splat (double 1.000000e+00)
  %2494 = fmul <2 x double> %1985, %2490
  %2495 = fcmp ogt <2 x double> %2488, %2494
  %2496 = and <2 x i1> %2493, %2495
  %2497 = fneg <2 x double> %2490
  %2498 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2497, <2 x double> %1985, <2 x double> %2488)
  %2499 = fmul <2 x double> %2481, %2498
  %2500 = select <2 x i1> %2496, <2 x double> %2499, <2 x double> zeroinitializer
  %2501 = fdiv <2 x double> %2488, %2490
  %2502 = select <2 x i1> %2496, <2 x double> %1985, <2 x double> %2501
  %2503 = getelementptr inbounds nuw i8, ptr %2486, i64 1872
  %2504 = load <2 x i64>, ptr %2503, align 16, !tbaa !26, !noalias !98
  %2505 = getelementptr inbounds nuw i8, ptr %2486, i64 560
  %2506 = load <2 x double>, ptr %2505, align 16, !tbaa !26, !noalias !98
  %2507 = fcmp ule <2 x double> %2506, zeroinitializer
  %2508 = xor <2 x i1> %2493, splat (i1 true)
  %2509 = select <2 x i1> %2508, <2 x i1> splat (i1 true), <2 x i1> %2507
  %2510 = getelementptr inbounds nuw i8, ptr %2486, i64 1488
  %2511 = load <2 x double>, ptr %2510, align 16, !tbaa !26, !noalias !98
  %2512 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2497, <2 x double> %2511, <2 x double> %2488)
  %2513 = fcmp ogt <2 x double> %2512, zeroinitializer
  %2514 = select <2 x i1> %2513, <2 x double> %2512, <2 x double> zeroinitializer
  %2515 = fmul <2 x double> %2481, %2514
  %2516 = icmp eq <2 x i64> %2504, zeroinitializer
  %2517 = select <2 x i1> %2509, <2 x i1> splat (i1 true), <2 x i1> %2516
  %2518 = select <2 x i1> %2517, <2 x double> %2500, <2 x double> %2515
  %2519 = select <2 x i1> %2517, <2 x double> %2502, <2 x double> %2511
  %2520 = load i64, ptr %132, align 16, !tbaa !21, !noalias !101
  %2521 = sitofp i64 %2520 to double
  %2522 = insertelement <2 x double> poison, double %2521, i64 0
  %2523 = shufflevector <2 x double> %2522, <2 x double> poison, <2 x i32> zeroinitializer
  %2524 = icmp sgt i64 %2520, 0
  br i1 %2524, label %2525, label %2580

2525:                                             ; preds = %2483
  %2526 = getelementptr inbounds nuw i8, ptr %2486, i64 1944
  %2527 = load ptr, ptr %2526, align 8, !tbaa !71, !noalias !101
  %2528 = getelementptr inbounds nuw i8, ptr %2486, i64 1952
  %2529 = load ptr, ptr %2528, align 16, !tbaa !72, !noalias !101
  %2530 = getelementptr inbounds nuw i8, ptr %2486, i64 1888
  %2531 = load i64, ptr %2530, align 16, !tbaa !31, !noalias !101
  %2532 = getelementptr inbounds nuw i8, ptr %2486, i64 1968
  %2533 = getelementptr inbounds nuw i8, ptr %2486, i64 1960
  %2534 = getelementptr inbounds nuw i8, ptr %2486, i64 1976
  br label %2535

2535:                                             ; preds = %2525, %2564
  %2536 = phi <2 x i64> [ splat (i64 -1), %2525 ], [ %2549, %2564 ]
  %2537 = phi i64 [ %2520, %2525 ], [ %2540, %2564 ]
  %2538 = phi <2 x double> [ %2523, %2525 ], [ %2578, %2564 ]
  %2539 = phi <2 x double> [ zeroinitializer, %2525 ], [ %2574, %2564 ]
  %2540 = add nsw i64 %2537, -1
  %2541 = getelementptr inbounds nuw <2 x double>, ptr %2527, i64 %2540
  %2542 = load <2 x double>, ptr %2541, align 16, !tbaa !26, !noalias !101
  %2543 = getelementptr inbounds nuw <2 x double>, ptr %2529, i64 %2540
  %2544 = load <2 x double>, ptr %2543, align 16, !tbaa !26, !noalias !101
  %2545 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2544, <2 x double> %1985, <2 x double> %2542)
  %2546 = fcmp ogt <2 x double> %2545, %2482
  %2547 = select <2 x i1> %2546, <2 x i64> %2536, <2 x i64> zeroinitializer
  %2548 = icmp sgt i64 %2537, %2531
  %2549 = select i1 %2548, <2 x i64> %2547, <2 x i64> zeroinitializer
  %2550 = icmp slt i64 %2537, %2520
  br i1 %2550, label %2551, label %2560

2551:                                             ; preds = %2535
  %2552 = load ptr, ptr %2532, align 16, !tbaa !69, !noalias !101
  %2553 = getelementptr inbounds nuw <2 x double>, ptr %2552, i64 %2537
  %2554 = load <2 x double>, ptr %2553, align 16, !tbaa !26, !noalias !101
  %2555 = fsub <2 x double> %2545, %1985
  %2556 = fmul <2 x double> %2555, %2554
  %2557 = icmp eq <2 x i64> %2549, %2536
  %2558 = select <2 x i1> %2557, <2 x double> zeroinitializer, <2 x double> %2556
  %2559 = fadd <2 x double> %2539, %2558
  br label %2560

2560:                                             ; preds = %2551, %2535
  %2561 = phi <2 x double> [ %2559, %2551 ], [ %2539, %2535 ]
  %2562 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2549)
  %2563 = icmp eq i64 %2562, 0
  br i1 %2563, label %2580, label %2564

2564:                                             ; preds = %2560
  %2565 = load ptr, ptr %2533, align 8, !tbaa !68, !noalias !101
  %2566 = getelementptr inbounds nuw <2 x double>, ptr %2565, i64 %2540
  %2567 = load <2 x double>, ptr %2566, align 16, !tbaa !26, !noalias !101
  %2568 = load ptr, ptr %2534, align 8, !tbaa !70, !noalias !101
  %2569 = getelementptr inbounds nuw <2 x double>, ptr %2568, i64 %2540
  %2570 = load <2 x double>, ptr %2569, align 16, !tbaa !26, !noalias !101
  %2571 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2570, <2 x double> %1985, <2 x double> %2567)
  %2572 = icmp eq <2 x i64> %2549, zeroinitializer
  %2573 = select <2 x i1> %2572, <2 x double> zeroinitializer, <2 x double> %2571
  %2574 = fadd <2 x double> %2561, %2573
  %2575 = uitofp nneg i64 %2540 to double
  %2576 = insertelement <2 x double> poison, double %2575, i64 0
  %2577 = shufflevector <2 x double> %2576, <2 x double> poison, <2 x i32> zeroinitializer
  %2578 = select <2 x i1> %2572, <2 x double> %2538, <2 x double> %2577
  %2579 = icmp samesign ugt i64 %2537, 1
  br i1 %2579, label %2535, label %2580, !llvm.loop !89

2580:                                             ; preds = %2564, %2560, %2483
  %2581 = phi <2 x double> [ %2523, %2483 ], [ %2538, %2560 ], [ %2578, %2564 ]
  %2582 = phi <2 x double> [ zeroinitializer, %2483 ], [ %2561, %2560 ], [ %2574, %2564 ]
  %2583 = getelementptr inbounds nuw i8, ptr %2486, i64 1520
  %2584 = load <2 x double>, ptr %2583, align 16, !tbaa !26, !noalias !98
  %2585 = getelementptr inbounds nuw i8, ptr %2486, i64 1376
  %2586 = load <2 x double>, ptr %2585, align 16, !tbaa !26, !noalias !98
  %2587 = getelementptr inbounds nuw i8, ptr %2486, i64 1760
  %2588 = load <2 x double>, ptr %2587, align 16, !tbaa !26, !noalias !98
  %2589 = fneg <2 x double> %2588
  %2590 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2584, <2 x double> %2586, <2 x double> %2589)
  %2591 = getelementptr inbounds nuw i8, ptr %2486, i64 1744
  %2592 = load <2 x double>, ptr %2591, align 16, !tbaa !26, !noalias !98
  %2593 = fadd <2 x double> %2584, %2592
  %2594 = getelementptr inbounds nuw i8, ptr %2486, i64 1840
  %2595 = load <2 x i64>, ptr %2594, align 16, !tbaa !26, !noalias !98
  %2596 = getelementptr inbounds nuw i8, ptr %2486, i64 2048
  %2597 = load ptr, ptr %2596, align 16, !tbaa !77, !noalias !98
  %2598 = load <2 x double>, ptr %2597, align 16, !tbaa !26, !noalias !98
  %2599 = fmul <2 x double> %2584, %2598
  %2600 = icmp eq <2 x i64> %2595, zeroinitializer
  %2601 = select <2 x i1> %2600, <2 x double> %2590, <2 x double> %2599
  %2602 = getelementptr inbounds nuw i8, ptr %2486, i64 2056
  %2603 = load ptr, ptr %2602, align 8, !tbaa !78, !noalias !98
  %2604 = load <2 x double>, ptr %2603, align 16, !tbaa !26, !noalias !98
  %2605 = fsub <2 x double> splat (double 1.000000e+00), %2604
  %2606 = fmul <2 x double> %2584, %2605
  %2607 = select <2 x i1> %2600, <2 x double> %2593, <2 x double> %2606
  %2608 = fneg <2 x double> %2607
  %2609 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2608, <2 x double> %1985, <2 x double> %2601)
  %2610 = fcmp olt <2 x double> %2581, %2523
  %2611 = and <2 x i1> %2493, %2610
  %2612 = fcmp ogt <2 x double> %2582, zeroinitializer
  %2613 = fcmp oge <2 x double> %2609, zeroinitializer
  %2614 = and <2 x i1> %2612, %2613
  %2615 = and <2 x i1> %2611, %2614
  %2616 = sext <2 x i1> %2615 to <2 x i64>
  %2617 = xor <2 x i64> %2616, splat (i64 -1)
  %2618 = fadd <2 x double> %2582, %2609
  %2619 = fcmp ogt <2 x double> %2618, zeroinitializer
  %2620 = and <2 x i1> %2611, %2619
  %2621 = select <2 x i1> %2620, <2 x i64> %2617, <2 x i64> zeroinitializer
  %2622 = or <2 x i64> %2621, %2616
  %2623 = fmul <2 x double> %2481, %2609
  %2624 = select <2 x i1> %2615, <2 x double> %2623, <2 x double> zeroinitializer
  %2625 = icmp eq <2 x i64> %2622, zeroinitializer
  %2626 = select <2 x i1> %2625, <2 x double> %2518, <2 x double> %2624
  %2627 = select <2 x i1> %2625, <2 x double> %2519, <2 x double> %1985
  %2628 = getelementptr inbounds nuw i8, ptr %2486, i64 1408
  store <2 x double> %2626, ptr %2628, align 16, !tbaa !26, !noalias !98
  %2629 = getelementptr inbounds nuw i8, ptr %2486, i64 1392
  store <2 x double> %2627, ptr %2629, align 16, !tbaa !26, !noalias !98
  %2630 = fmul <2 x double> %2481, %2582
  %2631 = fmul <2 x double> %2481, %2618
  %2632 = icmp eq <2 x i64> %2621, zeroinitializer
  %2633 = select <2 x i1> %2632, <2 x double> zeroinitializer, <2 x double> %2631
  %2634 = select <2 x i1> %2615, <2 x double> %2630, <2 x double> %2633
  %2635 = getelementptr inbounds nuw i8, ptr %2486, i64 1424
  store <2 x double> %2634, ptr %2635, align 16, !tbaa !26, !noalias !98
  %2636 = load i64, ptr %132, align 16, !tbaa !21, !noalias !98
  %2637 = sitofp i64 %2636 to double
  %2638 = insertelement <2 x double> poison, double %2637, i64 0
  %2639 = shufflevector <2 x double> %2638, <2 x double> poison, <2 x i32> zeroinitializer
  %2640 = select <2 x i1> %2625, <2 x double> %2639, <2 x double> %2581
  %2641 = getelementptr inbounds nuw i8, ptr %2486, i64 1440
  store <2 x double> %2640, ptr %2641, align 16, !tbaa !26, !noalias !98
  %2642 = add nuw nsw i64 %2484, 1
  %2643 = load i64, ptr %157, align 8, !tbaa !20, !noalias !98
  %2644 = icmp slt i64 %2642, %2643
  br i1 %2644, label %2483, label %2645, !llvm.loop !90

2645:                                             ; preds = %2580, %2438
  %2646 = phi i64 [ %2474, %2438 ], [ %2643, %2580 ]
  %2647 = icmp sgt i64 %2646, 0
  br i1 %2647, label %2812, label %2648

2648:                                             ; preds = %2645, %2475
  %2649 = phi i64 [ %2646, %2645 ], [ %2476, %2475 ]
  %2650 = load <2 x double>, ptr %164, align 16, !tbaa !26
  br label %2725

2651:                                             ; preds = %2885
  %2652 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %2653 = icmp sgt i64 %2909, 0
  br i1 %2653, label %2654, label %2725

2654:                                             ; preds = %2651
  %2655 = load ptr, ptr %142, align 8, !tbaa !28
  %2656 = and i64 %2909, 1
  %2657 = icmp eq i64 %2909, 1
  br i1 %2657, label %2701, label %2658

2658:                                             ; preds = %2654
  %2659 = and i64 %2909, 9223372036854775806
  br label %2660

2660:                                             ; preds = %2660, %2658
  %2661 = phi <2 x double> [ zeroinitializer, %2658 ], [ %2692, %2660 ]
  %2662 = phi <2 x double> [ zeroinitializer, %2658 ], [ %2697, %2660 ]
  %2663 = phi i64 [ 0, %2658 ], [ %2698, %2660 ]
  %2664 = phi i64 [ 0, %2658 ], [ %2699, %2660 ]
  %2665 = getelementptr inbounds nuw %struct.Piece, ptr %2655, i64 %2663
  %2666 = getelementptr inbounds nuw i8, ptr %2665, i64 1872
  %2667 = load <2 x i64>, ptr %2666, align 16, !tbaa !26
  %2668 = getelementptr inbounds nuw i8, ptr %2665, i64 32
  %2669 = load <2 x double>, ptr %2668, align 16, !tbaa !26
  %2670 = getelementptr inbounds nuw i8, ptr %2665, i64 1584
  %2671 = load <2 x double>, ptr %2670, align 16, !tbaa !26
  %2672 = fmul <2 x double> %2669, %2671
  %2673 = icmp eq <2 x i64> %2667, zeroinitializer
  %2674 = select <2 x i1> %2673, <2 x double> %2672, <2 x double> zeroinitializer
  %2675 = fadd <2 x double> %2661, %2674
  %2676 = getelementptr inbounds nuw i8, ptr %2665, i64 1552
  %2677 = load <2 x double>, ptr %2676, align 16, !tbaa !26
  %2678 = fmul <2 x double> %2669, %2677
  %2679 = select <2 x i1> %2673, <2 x double> %2678, <2 x double> zeroinitializer
  %2680 = fadd <2 x double> %2662, %2679
  %2681 = or disjoint i64 %2663, 1
  %2682 = getelementptr inbounds nuw %struct.Piece, ptr %2655, i64 %2681
  %2683 = getelementptr inbounds nuw i8, ptr %2682, i64 1872
  %2684 = load <2 x i64>, ptr %2683, align 16, !tbaa !26
  %2685 = getelementptr inbounds nuw i8, ptr %2682, i64 32
  %2686 = load <2 x double>, ptr %2685, align 16, !tbaa !26
  %2687 = getelementptr inbounds nuw i8, ptr %2682, i64 1584
  %2688 = load <2 x double>, ptr %2687, align 16, !tbaa !26
  %2689 = fmul <2 x double> %2686, %2688
  %2690 = icmp eq <2 x i64> %2684, zeroinitializer
  %2691 = select <2 x i1> %2690, <2 x double> %2689, <2 x double> zeroinitializer
  %2692 = fadd <2 x double> %2675, %2691
  %2693 = getelementptr inbounds nuw i8, ptr %2682, i64 1552
  %2694 = load <2 x double>, ptr %2693, align 16, !tbaa !26
  %2695 = fmul <2 x double> %2686, %2694
  %2696 = select <2 x i1> %2690, <2 x double> %2695, <2 x double> zeroinitializer
  %2697 = fadd <2 x double> %2680, %2696
  %2698 = add nuw nsw i64 %2663, 2
  %2699 = add i64 %2664, 2
  %2700 = icmp eq i64 %2699, %2659
  br i1 %2700, label %2701, label %2660, !llvm.loop !104

2701:                                             ; preds = %2660, %2654
  %2702 = phi <2 x double> [ poison, %2654 ], [ %2692, %2660 ]
  %2703 = phi <2 x double> [ poison, %2654 ], [ %2697, %2660 ]
  %2704 = phi <2 x double> [ zeroinitializer, %2654 ], [ %2692, %2660 ]
  %2705 = phi <2 x double> [ zeroinitializer, %2654 ], [ %2697, %2660 ]
  %2706 = phi i64 [ 0, %2654 ], [ %2698, %2660 ]
  %2707 = icmp eq i64 %2656, 0
  br i1 %2707, label %2725, label %2708

2708:                                             ; preds = %2701
  %2709 = getelementptr inbounds nuw %struct.Piece, ptr %2655, i64 %2706
  %2710 = getelementptr inbounds nuw i8, ptr %2709, i64 1872
  %2711 = load <2 x i64>, ptr %2710, align 16, !tbaa !26
  %2712 = getelementptr inbounds nuw i8, ptr %2709, i64 32
  %2713 = load <2 x double>, ptr %2712, align 16, !tbaa !26
  %2714 = getelementptr inbounds nuw i8, ptr %2709, i64 1584
  %2715 = load <2 x double>, ptr %2714, align 16, !tbaa !26
  %2716 = fmul <2 x double> %2713, %2715
  %2717 = icmp eq <2 x i64> %2711, zeroinitializer
  %2718 = select <2 x i1> %2717, <2 x double> %2716, <2 x double> zeroinitializer
  %2719 = fadd <2 x double> %2704, %2718
  %2720 = getelementptr inbounds nuw i8, ptr %2709, i64 1552
  %2721 = load <2 x double>, ptr %2720, align 16, !tbaa !26
  %2722 = fmul <2 x double> %2713, %2721
  %2723 = select <2 x i1> %2717, <2 x double> %2722, <2 x double> zeroinitializer
  %2724 = fadd <2 x double> %2705, %2723
  br label %2725

2725:                                             ; preds = %2708, %2701, %2648, %2651
  %2726 = phi i1 [ false, %2651 ], [ false, %2648 ], [ true, %2701 ], [ true, %2708 ]
  %2727 = phi <2 x double> [ %2652, %2651 ], [ %2650, %2648 ], [ %2652, %2701 ], [ %2652, %2708 ]
  %2728 = phi i64 [ %2909, %2651 ], [ %2649, %2648 ], [ %2909, %2701 ], [ %2909, %2708 ]
  %2729 = phi <2 x double> [ zeroinitializer, %2651 ], [ zeroinitializer, %2648 ], [ %2703, %2701 ], [ %2724, %2708 ]
  %2730 = phi <2 x double> [ zeroinitializer, %2651 ], [ zeroinitializer, %2648 ], [ %2702, %2701 ], [ %2719, %2708 ]
  %2731 = load <2 x double>, ptr %204, align 16, !tbaa !26
  %2732 = load <2 x double>, ptr %187, align 16, !tbaa !26
  %2733 = fsub <2 x double> %2727, %2732
  %2734 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2731, <2 x double> %2733, <2 x double> %2730)
  %2735 = fadd <2 x double> %2729, %2731
  store <2 x double> %2734, ptr %169, align 16, !tbaa !26
  %2736 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %2737 = fcmp ule <2 x double> %2736, zeroinitializer
  %2738 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %2739 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2736, <2 x double> splat (double 5.000000e-01), <2 x double> %2738)
  %2740 = fsub <2 x double> %2739, %2727
  %2741 = fcmp ogt <2 x double> %2736, splat (double 1.000000e-30)
  %2742 = select <2 x i1> %2741, <2 x double> %2736, <2 x double> splat (double 1.000000e-30)
  %2743 = fdiv <2 x double> %2740, %2742
  %2744 = fcmp ogt <2 x double> %2743, zeroinitializer
  %2745 = select <2 x i1> %2744, <2 x double> %2743, <2 x double> zeroinitializer
  %2746 = fcmp olt <2 x double> %2745, splat (double 1.000000e+00)
  %2747 = select <2 x i1> %2746, <2 x double> %2745, <2 x double> splat (double 1.000000e+00)
  %2748 = load <2 x double>, ptr %168, align 16, !tbaa !26
  %2749 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %2750 = icmp eq <2 x i64> %2749, zeroinitializer
  %2751 = select <2 x i1> %2750, <2 x double> zeroinitializer, <2 x double> splat (double 1.000000e+00)
  %2752 = select <2 x i1> %2737, <2 x double> %2751, <2 x double> %2747
  %2753 = fmul <2 x double> %2748, %2752
  %2754 = fcmp ule <2 x double> %2753, zeroinitializer
  %2755 = fcmp uge <2 x double> %2753, %2748
  %2756 = or <2 x i1> %2754, %2755
  %2757 = or <2 x i1> %2737, %2756
  %2758 = fdiv <2 x double> %2748, %2742
  %2759 = select <2 x i1> %2757, <2 x double> zeroinitializer, <2 x double> %2758
  %2760 = fadd <2 x double> %2735, %2759
  %2761 = load <2 x double>, ptr %161, align 16, !tbaa !26
  %2762 = load <2 x double>, ptr %1, align 16, !tbaa !26
  %2763 = fmul <2 x double> %2727, %2762
  %2764 = load <2 x double>, ptr %170, align 16, !tbaa !26
  %2765 = load <2 x double>, ptr %171, align 16, !tbaa !26
  %2766 = fmul <2 x double> %2765, splat (double 5.000000e-01)
  %2767 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2766, <2 x double> %2727, <2 x double> %2764)
  %2768 = load <2 x double>, ptr %172, align 16, !tbaa !26
  %2769 = fmul <2 x double> %2727, %2768
  %2770 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2763, <2 x double> %2767, <2 x double> %2769)
  %2771 = load <2 x double>, ptr %162, align 16, !tbaa !26
  %2772 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %2773 = fmul <2 x double> %2762, %2772
  %2774 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2766, <2 x double> %2772, <2 x double> %2764)
  %2775 = fmul <2 x double> %2768, %2772
  %2776 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2773, <2 x double> %2774, <2 x double> %2775)
  %2777 = fmul <2 x double> %2771, %2776
  %2778 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2761, <2 x double> %2770, <2 x double> %2777)
  %2779 = load <2 x double>, ptr %163, align 16, !tbaa !26
  %2780 = load <2 x double>, ptr %166, align 16, !tbaa !26
  %2781 = fmul <2 x double> %2762, %2780
  %2782 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2766, <2 x double> %2780, <2 x double> %2764)
  %2783 = fmul <2 x double> %2768, %2780
  %2784 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2781, <2 x double> %2782, <2 x double> %2783)
  %2785 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2779, <2 x double> %2784, <2 x double> %2778)
  %2786 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2765, <2 x double> %2727, <2 x double> %2764)
  %2787 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2762, <2 x double> %2786, <2 x double> %2768)
  %2788 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %2789 = fcmp une <2 x double> %2788, zeroinitializer
  %2790 = fadd <2 x double> %2734, %2785
  %2791 = fsub <2 x double> %2790, %2753
  %2792 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2761, <2 x double> %2787, <2 x double> %2760)
  %2793 = fdiv <2 x double> %2791, %2792
  %2794 = fsub <2 x double> %2727, %2793
  %2795 = select <2 x i1> %2789, <2 x double> %2727, <2 x double> %2794
  store <2 x double> %2795, ptr %164, align 16, !tbaa !26
  %2796 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %2797 = fneg <2 x double> %2771
  %2798 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2797, <2 x double> %2796, <2 x double> %2753)
  %2799 = load <2 x double>, ptr %207, align 16, !tbaa !26
  %2800 = fneg <2 x double> %2779
  %2801 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2800, <2 x double> %2799, <2 x double> %2798)
  %2802 = fdiv <2 x double> %2801, %2761
  %2803 = load <2 x double>, ptr %208, align 16, !tbaa !26
  %2804 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2797, <2 x double> %2803, <2 x double> %2734)
  %2805 = load <2 x double>, ptr %209, align 16, !tbaa !26
  %2806 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2800, <2 x double> %2805, <2 x double> %2804)
  %2807 = fdiv <2 x double> %2806, %2761
  %2808 = load <2 x double>, ptr %210, align 16, !tbaa !26
  %2809 = select <2 x i1> %2789, <2 x double> %2808, <2 x double> %2802
  store <2 x double> %2809, ptr %210, align 16, !tbaa !26
  %2810 = load <2 x double>, ptr %211, align 16, !tbaa !26
  %2811 = select <2 x i1> %2789, <2 x double> %2810, <2 x double> %2807
  store <2 x double> %2811, ptr %211, align 16, !tbaa !26
  br i1 %2726, label %2911, label %3211

2812:                                             ; preds = %2645, %2885
  %2813 = phi i64 [ %2908, %2885 ], [ 0, %2645 ]
  %2814 = load ptr, ptr %142, align 8, !tbaa !28
  %2815 = getelementptr inbounds nuw %struct.Piece, ptr %2814, i64 %2813
  %2816 = getelementptr inbounds nuw i8, ptr %2815, i64 1392
  %2817 = load <2 x double>, ptr %2816, align 16, !tbaa !26
  %2818 = load i64, ptr %132, align 16, !tbaa !21
  %2819 = icmp sgt i64 %2818, 0
  br i1 %2819, label %2820, label %2825

2820:                                             ; preds = %2812
  %2821 = getelementptr inbounds nuw i8, ptr %2815, i64 1440
  %2822 = getelementptr inbounds nuw i8, ptr %2815, i64 1944
  %2823 = getelementptr inbounds nuw i8, ptr %2815, i64 1952
  %2824 = getelementptr inbounds nuw i8, ptr %2815, i64 1896
  br label %2840

2825:                                             ; preds = %2840, %2812
  %2826 = getelementptr inbounds nuw i8, ptr %2815, i64 1840
  %2827 = load <2 x i64>, ptr %2826, align 16, !tbaa !26
  %2828 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2827)
  %2829 = icmp eq i64 %2828, 0
  %2830 = load i64, ptr %133, align 8, !tbaa !22
  %2831 = icmp sgt i64 %2830, 0
  br i1 %2829, label %2837, label %2832

2832:                                             ; preds = %2825
  br i1 %2831, label %2833, label %2885

2833:                                             ; preds = %2832
  %2834 = getelementptr inbounds nuw i8, ptr %2815, i64 2048
  %2835 = getelementptr inbounds nuw i8, ptr %2815, i64 2056
  %2836 = getelementptr inbounds nuw i8, ptr %2815, i64 2016
  br label %2860

2837:                                             ; preds = %2825
  br i1 %2831, label %2838, label %2885

2838:                                             ; preds = %2837
  %2839 = getelementptr inbounds nuw i8, ptr %2815, i64 2016
  br label %2878

2840:                                             ; preds = %2820, %2840
  %2841 = phi <2 x double> [ %2817, %2820 ], [ %2856, %2840 ]
  %2842 = phi i64 [ %2818, %2820 ], [ %2843, %2840 ]
  %2843 = add nsw i64 %2842, -1
  %2844 = load <2 x double>, ptr %2821, align 16, !tbaa !26
  %2845 = uitofp nneg i64 %2843 to double
  %2846 = insertelement <2 x double> poison, double %2845, i64 0
  %2847 = shufflevector <2 x double> %2846, <2 x double> poison, <2 x i32> zeroinitializer
  %2848 = fcmp ugt <2 x double> %2844, %2847
  %2849 = load ptr, ptr %2822, align 8, !tbaa !71
  %2850 = getelementptr inbounds nuw <2 x double>, ptr %2849, i64 %2843
  %2851 = load <2 x double>, ptr %2850, align 16, !tbaa !26
  %2852 = load ptr, ptr %2823, align 16, !tbaa !72
  %2853 = getelementptr inbounds nuw <2 x double>, ptr %2852, i64 %2843
  %2854 = load <2 x double>, ptr %2853, align 16, !tbaa !26
  %2855 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2854, <2 x double> %2841, <2 x double> %2851)
  %2856 = select <2 x i1> %2848, <2 x double> %2855, <2 x double> %2817
  %2857 = load ptr, ptr %2824, align 8, !tbaa !57
  %2858 = getelementptr inbounds nuw <2 x double>, ptr %2857, i64 %2843
  store <2 x double> %2856, ptr %2858, align 16, !tbaa !26
  %2859 = icmp samesign ugt i64 %2842, 1
  br i1 %2859, label %2840, label %2825, !llvm.loop !105

2860:                                             ; preds = %2833, %2860
  %2861 = phi i64 [ 0, %2833 ], [ %2875, %2860 ]
  %2862 = phi <2 x double> [ %2817, %2833 ], [ %2872, %2860 ]
  %2863 = load <2 x i64>, ptr %2826, align 16, !tbaa !26
  %2864 = load ptr, ptr %2834, align 16, !tbaa !77
  %2865 = getelementptr inbounds nuw <2 x double>, ptr %2864, i64 %2861
  %2866 = load <2 x double>, ptr %2865, align 16, !tbaa !26
  %2867 = load ptr, ptr %2835, align 8, !tbaa !78
  %2868 = getelementptr inbounds nuw <2 x double>, ptr %2867, i64 %2861
  %2869 = load <2 x double>, ptr %2868, align 16, !tbaa !26
  %2870 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2869, <2 x double> %2862, <2 x double> %2866)
  %2871 = icmp eq <2 x i64> %2863, zeroinitializer
  %2872 = select <2 x i1> %2871, <2 x double> %2817, <2 x double> %2870
  %2873 = load ptr, ptr %2836, align 16, !tbaa !106
  %2874 = getelementptr inbounds nuw <2 x double>, ptr %2873, i64 %2861
  store <2 x double> %2872, ptr %2874, align 16, !tbaa !26
  %2875 = add nuw nsw i64 %2861, 1
  %2876 = load i64, ptr %133, align 8, !tbaa !22
  %2877 = icmp slt i64 %2875, %2876
  br i1 %2877, label %2860, label %2885, !llvm.loop !107

2878:                                             ; preds = %2838, %2878
  %2879 = phi i64 [ 0, %2838 ], [ %2882, %2878 ]
  %2880 = load ptr, ptr %2839, align 16, !tbaa !106
  %2881 = getelementptr inbounds nuw <2 x double>, ptr %2880, i64 %2879
  store <2 x double> %2817, ptr %2881, align 16, !tbaa !26
  %2882 = add nuw nsw i64 %2879, 1
  %2883 = load i64, ptr %133, align 8, !tbaa !22
  %2884 = icmp slt i64 %2882, %2883
  br i1 %2884, label %2878, label %2885, !llvm.loop !108

2885:                                             ; preds = %2860, %2878, %2832, %2837
  %2886 = phi <2 x double> [ %2817, %2837 ], [ %2817, %2832 ], [ %2817, %2878 ], [ %2872, %2860 ]
  %2887 = load <2 x i64>, ptr %2826, align 16, !tbaa !26
  %2888 = getelementptr inbounds nuw i8, ptr %2815, i64 1568
  %2889 = load <2 x double>, ptr %2888, align 16, !tbaa !26
  %2890 = icmp eq <2 x i64> %2887, zeroinitializer
  %2891 = select <2 x i1> %2890, <2 x double> zeroinitializer, <2 x double> %2889
  %2892 = fsub <2 x double> splat (double 1.000000e+00), %2891
  %2893 = getelementptr inbounds nuw i8, ptr %2815, i64 1376
  %2894 = load <2 x double>, ptr %2893, align 16, !tbaa !26
  %2895 = fmul <2 x double> %2891, %2894
  %2896 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2892, <2 x double> %2886, <2 x double> %2895)
  %2897 = getelementptr inbounds nuw i8, ptr %2815, i64 1616
  store <2 x double> %2896, ptr %2897, align 16, !tbaa !26
  %2898 = getelementptr inbounds nuw i8, ptr %2815, i64 1552
  %2899 = load <2 x double>, ptr %2898, align 16, !tbaa !26
  %2900 = fsub <2 x double> %2894, %2886
  %2901 = fmul <2 x double> %2900, %2899
  %2902 = getelementptr inbounds nuw i8, ptr %2815, i64 1584
  store <2 x double> %2901, ptr %2902, align 16, !tbaa !26
  %2903 = getelementptr inbounds nuw i8, ptr %2815, i64 800
  %2904 = load <2 x double>, ptr %2903, align 16, !tbaa !26
  %2905 = fdiv <2 x double> %2901, %2904
  %2906 = fsub <2 x double> %2894, %2905
  %2907 = getelementptr inbounds nuw i8, ptr %2815, i64 1600
  store <2 x double> %2906, ptr %2907, align 16, !tbaa !26
  %2908 = add nuw nsw i64 %2813, 1
  %2909 = load i64, ptr %157, align 8, !tbaa !20
  %2910 = icmp slt i64 %2908, %2909
  br i1 %2910, label %2812, label %2651, !llvm.loop !109

2911:                                             ; preds = %2725, %3166
  %2912 = phi i64 [ %3208, %3166 ], [ 0, %2725 ]
  %2913 = phi <2 x double> [ %3207, %3166 ], [ zeroinitializer, %2725 ]
  %2914 = load ptr, ptr %142, align 8, !tbaa !28
  %2915 = getelementptr inbounds nuw %struct.Piece, ptr %2914, i64 %2912
  %2916 = getelementptr inbounds nuw i8, ptr %2915, i64 1408
  %2917 = load <2 x double>, ptr %2916, align 16, !tbaa !26
  %2918 = getelementptr inbounds nuw i8, ptr %2915, i64 1424
  %2919 = load <2 x double>, ptr %2918, align 16, !tbaa !26
  %2920 = fadd <2 x double> %2917, %2919
  %2921 = getelementptr inbounds nuw i8, ptr %2915, i64 1392
  %2922 = load <2 x double>, ptr %2921, align 16, !tbaa !26
  %2923 = load <2 x double>, ptr %203, align 16, !tbaa !26
  %2924 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2923, <2 x double> splat (double 0xC00BBAC89E13FCB7), <2 x double> splat (double 0xC09E841BADC0980B))
  %2925 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2923, <2 x double> %2924, <2 x double> splat (double 0x4142F8368A3D70A4))
  %2926 = getelementptr inbounds nuw i8, ptr %2915, i64 1328
  %2927 = load <2 x double>, ptr %2926, align 16, !tbaa !26
  %2928 = getelementptr inbounds nuw i8, ptr %2915, i64 1008
  %2929 = load <2 x double>, ptr %2928, align 16, !tbaa !26
  %2930 = fneg <2 x double> %2927
  %2931 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2930, <2 x double> %2929, <2 x double> %2920)
  %2932 = getelementptr inbounds nuw i8, ptr %2915, i64 1344
  %2933 = load <2 x double>, ptr %2932, align 16, !tbaa !26
  %2934 = getelementptr inbounds nuw i8, ptr %2915, i64 1200
  %2935 = load <2 x double>, ptr %2934, align 16, !tbaa !26
  %2936 = fneg <2 x double> %2933
  %2937 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2936, <2 x double> %2935, <2 x double> %2931)
  %2938 = getelementptr inbounds nuw i8, ptr %2915, i64 1312
  %2939 = load <2 x double>, ptr %2938, align 16, !tbaa !26
  %2940 = fdiv <2 x double> %2937, %2939
  %2941 = getelementptr inbounds nuw i8, ptr %2915, i64 400
  %2942 = load <2 x double>, ptr %2941, align 16, !tbaa !26
  %2943 = fsub <2 x double> %2942, %2940
  %2944 = getelementptr inbounds nuw i8, ptr %2915, i64 976
  %2945 = load <2 x double>, ptr %2944, align 16, !tbaa !26
  %2946 = getelementptr inbounds nuw i8, ptr %2915, i64 1792
  %2947 = load <2 x double>, ptr %2946, align 16, !tbaa !26
  %2948 = fsub <2 x double> %2945, %2947
  %2949 = getelementptr inbounds nuw i8, ptr %2915, i64 1696
  %2950 = load <2 x double>, ptr %2949, align 16, !tbaa !26
  %2951 = getelementptr inbounds nuw i8, ptr %2915, i64 320
  %2952 = load <2 x double>, ptr %2951, align 16, !tbaa !26
  %2953 = fmul <2 x double> %2950, %2952
  %2954 = getelementptr inbounds nuw i8, ptr %2915, i64 1616
  %2955 = load <2 x double>, ptr %2954, align 16, !tbaa !26
  %2956 = fsub <2 x double> %2955, %2922
  %2957 = fmul <2 x double> %2953, %2956
  %2958 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2925, <2 x double> %2920, <2 x double> %2957)
  %2959 = fsub <2 x double> %2943, %2948
  %2960 = getelementptr inbounds nuw i8, ptr %2915, i64 736
  %2961 = getelementptr inbounds nuw i8, ptr %2915, i64 768
  %2962 = load <2 x double>, ptr %2961, align 16, !tbaa !26
  %2963 = fsub <2 x double> %2959, %2962
  %2964 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %2963)
  %2965 = getelementptr inbounds nuw i8, ptr %2915, i64 208
  %2966 = load <2 x double>, ptr %2965, align 16, !tbaa !26
  %2967 = fdiv <2 x double> %2964, %2966
  %2968 = getelementptr inbounds nuw i8, ptr %2915, i64 1840
  %2969 = load <2 x i64>, ptr %2968, align 16, !tbaa !26
  %2970 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2969)
  %2971 = icmp eq i64 %2970, 0
  br i1 %2971, label %3166, label %2972

2972:                                             ; preds = %2911
  %2973 = getelementptr inbounds nuw i8, ptr %2915, i64 944
  %2974 = load <2 x double>, ptr %2973, align 16, !tbaa !26
  %2975 = fcmp ogt <2 x double> %2948, %2943
  %2976 = getelementptr inbounds nuw i8, ptr %2915, i64 1824
  %2977 = load <2 x double>, ptr %2976, align 16, !tbaa !26
  %2978 = fcmp oeq <2 x double> %2977, zeroinitializer
  %2979 = select <2 x i1> %2978, <2 x i1> %2975, <2 x i1> zeroinitializer
  %2980 = select <2 x i1> %2979, <2 x i64> %2969, <2 x i64> zeroinitializer
  %2981 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %2980)
  %2982 = icmp eq i64 %2981, 0
  br i1 %2982, label %3053, label %2983

2983:                                             ; preds = %2972
  %2984 = fsub <2 x double> %2948, %2943
  %2985 = fdiv <2 x double> %2984, %2966
  %2986 = getelementptr inbounds nuw i8, ptr %2915, i64 1928
  %2987 = load ptr, ptr %2986, align 8, !tbaa !64
  %2988 = load i64, ptr %132, align 16, !tbaa !21
  %2989 = add nsw i64 %2988, -1
  %2990 = getelementptr inbounds <2 x double>, ptr %2987, i64 %2989
  %2991 = load <2 x double>, ptr %2990, align 16, !tbaa !26
  %2992 = icmp sgt i64 %2988, 1
  br i1 %2992, label %2993, label %3045

2993:                                             ; preds = %2983
  %2994 = getelementptr inbounds nuw i8, ptr %2915, i64 1888
  %2995 = load i64, ptr %2994, align 16, !tbaa !31
  %2996 = getelementptr inbounds nuw i8, ptr %2915, i64 1104
  %2997 = getelementptr inbounds nuw i8, ptr %2915, i64 384
  %2998 = getelementptr inbounds nuw i8, ptr %2915, i64 1984
  br label %2999

2999:                                             ; preds = %2993, %3042
  %3000 = phi <2 x double> [ %2974, %2993 ], [ %3037, %3042 ]
  %3001 = phi i64 [ %2989, %2993 ], [ %3043, %3042 ]
  %3002 = phi <2 x double> [ %2991, %2993 ], [ %3025, %3042 ]
  %3003 = phi <2 x i64> [ %2980, %2993 ], [ %3029, %3042 ]
  %3004 = phi <2 x double> [ %2985, %2993 ], [ %3036, %3042 ]
  %3005 = icmp slt i64 %3001, %2995
  br i1 %3005, label %3006, label %3012

3006:                                             ; preds = %2999
  %3007 = load ptr, ptr %2998, align 16, !tbaa !67
  %3008 = getelementptr inbounds nuw <2 x double>, ptr %3007, i64 %3001
  %3009 = load <2 x double>, ptr %3008, align 16, !tbaa !26
  %3010 = load <2 x double>, ptr %2997, align 16, !tbaa !26
  %3011 = fmul <2 x double> %3009, %3010
  br label %3020

3012:                                             ; preds = %2999
  %3013 = load <2 x double>, ptr %2996, align 16, !tbaa !26
  %3014 = load <2 x double>, ptr %2997, align 16, !tbaa !26
  %3015 = load ptr, ptr %2998, align 16, !tbaa !67
  %3016 = getelementptr inbounds nuw <2 x double>, ptr %3015, i64 %3001
  %3017 = load <2 x double>, ptr %3016, align 16, !tbaa !26
  %3018 = fsub <2 x double> %3013, %3014
  %3019 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3017, <2 x double> %3018, <2 x double> %3014)
  br label %3020

3020:                                             ; preds = %3006, %3012
  %3021 = phi <2 x double> [ %3011, %3006 ], [ %3019, %3012 ]
  %3022 = getelementptr inbounds nuw <2 x double>, ptr %2987, i64 %3001
  %3023 = load <2 x double>, ptr %3022, align 16, !tbaa !26
  %3024 = icmp eq <2 x i64> %3003, zeroinitializer
  %3025 = select <2 x i1> %3024, <2 x double> %3002, <2 x double> %3023
  %3026 = fsub <2 x double> %3000, %3021
  %3027 = fmul <2 x double> %3026, %3025
  %3028 = fcmp olt <2 x double> %3027, %3004
  %3029 = select <2 x i1> %3028, <2 x i64> %3003, <2 x i64> zeroinitializer
  %3030 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3029)
  %3031 = icmp eq i64 %3030, 0
  br i1 %3031, label %3045, label %3032

3032:                                             ; preds = %3020
  %3033 = fneg <2 x double> %3025
  %3034 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3033, <2 x double> %3026, <2 x double> %3004)
  %3035 = icmp eq <2 x i64> %3029, zeroinitializer
  %3036 = select <2 x i1> %3035, <2 x double> %3004, <2 x double> %3034
  %3037 = select <2 x i1> %3035, <2 x double> %3000, <2 x double> %3021
  %3038 = icmp eq i64 %3001, 1
  br i1 %3038, label %3039, label %3042

3039:                                             ; preds = %3032
  %3040 = load <2 x double>, ptr %2987, align 16, !tbaa !26
  %3041 = select <2 x i1> %3035, <2 x double> %3025, <2 x double> %3040
  br label %3045

3042:                                             ; preds = %3032
  %3043 = add nsw i64 %3001, -1
  %3044 = icmp sgt i64 %3001, 1
  br i1 %3044, label %2999, label %3045, !llvm.loop !110

3045:                                             ; preds = %3042, %3020, %3039, %2983
  %3046 = phi <2 x double> [ %2985, %2983 ], [ %3036, %3039 ], [ %3004, %3020 ], [ %3036, %3042 ]
  %3047 = phi <2 x double> [ %2974, %2983 ], [ %3037, %3039 ], [ %3000, %3020 ], [ %3037, %3042 ]
  %3048 = phi <2 x double> [ %2991, %2983 ], [ %3041, %3039 ], [ %3025, %3020 ], [ %3025, %3042 ]
  %3049 = fdiv <2 x double> %3046, %3048
  %3050 = fsub <2 x double> %3047, %3049
  %3051 = icmp eq <2 x i64> %2980, zeroinitializer
  %3052 = select <2 x i1> %3051, <2 x double> %2974, <2 x double> %3050
  br label %3053

3053:                                             ; preds = %3045, %2972
  %3054 = phi <2 x double> [ %3052, %3045 ], [ %2974, %2972 ]
  %3055 = load <2 x double>, ptr %2960, align 16, !tbaa !26
  %3056 = getelementptr inbounds nuw i8, ptr %2915, i64 640
  %3057 = load <2 x double>, ptr %3056, align 16, !tbaa !26
  %3058 = getelementptr inbounds nuw i8, ptr %2915, i64 656
  %3059 = load <2 x double>, ptr %3058, align 16, !tbaa !26
  %3060 = getelementptr inbounds nuw i8, ptr %2915, i64 672
  %3061 = load <2 x double>, ptr %3060, align 16, !tbaa !26
  %3062 = getelementptr inbounds nuw i8, ptr %2915, i64 688
  %3063 = load <2 x double>, ptr %3062, align 16, !tbaa !26
  %3064 = load <2 x double>, ptr %2915, align 16, !tbaa !26
  %3065 = fmul <2 x double> %3064, splat (double 1.000000e-09)
  %3066 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3055, <2 x double> %3063, <2 x double> %3061)
  %3067 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3055, <2 x double> %3066, <2 x double> %3059)
  %3068 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3055, <2 x double> %3067, <2 x double> %3057)
  %3069 = fsub <2 x double> %3068, %3054
  %3070 = fmul <2 x double> %3055, splat (double 3.000000e+00)
  %3071 = fmul <2 x double> %3070, %3063
  %3072 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3061, <2 x double> splat (double 2.000000e+00), <2 x double> %3071)
  %3073 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3055, <2 x double> %3072, <2 x double> %3059)
  %3074 = fdiv <2 x double> %3069, %3073
  %3075 = fsub <2 x double> %3055, %3074
  %3076 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3074)
  %3077 = fcmp oge <2 x double> %3076, %3065
  %3078 = bitcast <2 x i1> %3077 to i2
  %3079 = icmp eq i2 %3078, 0
  br i1 %3079, label %3126, label %3080, !llvm.loop !111

3080:                                             ; preds = %3053
  %3081 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3075, <2 x double> %3063, <2 x double> %3061)
  %3082 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3075, <2 x double> %3081, <2 x double> %3059)
  %3083 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3075, <2 x double> %3082, <2 x double> %3057)
  %3084 = fsub <2 x double> %3083, %3054
  %3085 = fmul <2 x double> %3075, splat (double 3.000000e+00)
  %3086 = fmul <2 x double> %3085, %3063
  %3087 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3061, <2 x double> splat (double 2.000000e+00), <2 x double> %3086)
  %3088 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3075, <2 x double> %3087, <2 x double> %3059)
  %3089 = fdiv <2 x double> %3084, %3088
  %3090 = fsub <2 x double> %3075, %3089
  %3091 = select <2 x i1> %3077, <2 x double> %3090, <2 x double> %3075
  %3092 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3089)
  %3093 = fcmp oge <2 x double> %3092, %3065
  %3094 = and <2 x i1> %3093, %3077
  %3095 = bitcast <2 x i1> %3094 to i2
  %3096 = icmp eq i2 %3095, 0
  br i1 %3096, label %3126, label %3097, !llvm.loop !111

3097:                                             ; preds = %3080
  %3098 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3091, <2 x double> %3063, <2 x double> %3061)
  %3099 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3091, <2 x double> %3098, <2 x double> %3059)
  %3100 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3091, <2 x double> %3099, <2 x double> %3057)
  %3101 = fsub <2 x double> %3100, %3054
  %3102 = fmul <2 x double> %3091, splat (double 3.000000e+00)
  %3103 = fmul <2 x double> %3102, %3063
  %3104 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3061, <2 x double> splat (double 2.000000e+00), <2 x double> %3103)
  %3105 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3091, <2 x double> %3104, <2 x double> %3059)
  %3106 = fdiv <2 x double> %3101, %3105
  %3107 = fsub <2 x double> %3091, %3106
  %3108 = select <2 x i1> %3094, <2 x double> %3107, <2 x double> %3091
  %3109 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3106)
  %3110 = fcmp oge <2 x double> %3109, %3065
  %3111 = and <2 x i1> %3110, %3094
  %3112 = bitcast <2 x i1> %3111 to i2
  %3113 = icmp eq i2 %3112, 0
  br i1 %3113, label %3126, label %3114, !llvm.loop !111

3114:                                             ; preds = %3097
  %3115 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3108, <2 x double> %3063, <2 x double> %3061)
  %3116 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3108, <2 x double> %3115, <2 x double> %3059)
  %3117 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3108, <2 x double> %3116, <2 x double> %3057)
  %3118 = fsub <2 x double> %3117, %3054
  %3119 = fmul <2 x double> %3108, splat (double 3.000000e+00)
  %3120 = fmul <2 x double> %3119, %3063
  %3121 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3061, <2 x double> splat (double 2.000000e+00), <2 x double> %3120)
  %3122 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3108, <2 x double> %3121, <2 x double> %3059)
  %3123 = fdiv <2 x double> %3118, %3122
  %3124 = fsub <2 x double> %3108, %3123
  %3125 = select <2 x i1> %3111, <2 x double> %3124, <2 x double> %3108
  br label %3126

3126:                                             ; preds = %3114, %3097, %3080, %3053
  %3127 = phi <2 x double> [ %3075, %3053 ], [ %3091, %3080 ], [ %3108, %3097 ], [ %3125, %3114 ]
  %3128 = fmul <2 x double> %3064, splat (double 2.800000e-01)
  %3129 = fcmp ogt <2 x double> %3127, %3128
  %3130 = select <2 x i1> %3129, <2 x double> %3127, <2 x double> %3128
  %3131 = fcmp olt <2 x double> %3130, %3064
  %3132 = select <2 x i1> %3131, <2 x double> %3130, <2 x double> %3064
  %3133 = fcmp olt <2 x double> %2948, %2943
  %3134 = icmp eq <2 x i64> %2969, zeroinitializer
  %3135 = select <2 x i1> %3134, <2 x i1> splat (i1 true), <2 x i1> %3133
  %3136 = select <2 x i1> %3135, <2 x double> %2948, <2 x double> %2943
  %3137 = fsub <2 x double> %3132, %3055
  %3138 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3137)
  %3139 = select <2 x i1> %3134, <2 x double> %2967, <2 x double> %3138
  %3140 = select <2 x i1> %3134, <2 x double> %3055, <2 x double> %3132
  store <2 x double> %3140, ptr %2960, align 16, !tbaa !26
  %3141 = getelementptr inbounds nuw i8, ptr %2915, i64 752
  %3142 = load <2 x double>, ptr %3141, align 16, !tbaa !26
  %3143 = select <2 x i1> %3134, <2 x double> %3142, <2 x double> %3054
  store <2 x double> %3143, ptr %3141, align 16, !tbaa !26
  %3144 = getelementptr inbounds nuw i8, ptr %2915, i64 1680
  %3145 = load <2 x double>, ptr %3144, align 16, !tbaa !26
  %3146 = fmul <2 x double> %3145, splat (double 2.000000e+00)
  %3147 = getelementptr inbounds nuw i8, ptr %2915, i64 96
  %3148 = load <2 x double>, ptr %3147, align 16, !tbaa !26
  %3149 = getelementptr inbounds nuw i8, ptr %2915, i64 112
  %3150 = load <2 x double>, ptr %3149, align 16, !tbaa !26
  %3151 = getelementptr inbounds nuw i8, ptr %2915, i64 128
  %3152 = load <2 x double>, ptr %3151, align 16, !tbaa !26
  %3153 = fmul <2 x double> %2922, %3152
  %3154 = fmul <2 x double> %3153, splat (double 0x3FD5555555555555)
  %3155 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3150, <2 x double> splat (double 5.000000e-01), <2 x double> %3154)
  %3156 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2922, <2 x double> %3155, <2 x double> %3148)
  %3157 = fmul <2 x double> %2922, %3156
  %3158 = getelementptr inbounds nuw i8, ptr %2915, i64 192
  %3159 = load <2 x double>, ptr %3158, align 16, !tbaa !26
  %3160 = fneg <2 x double> %3159
  %3161 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3160, <2 x double> %2922, <2 x double> %3157)
  %3162 = fmul <2 x double> %3146, %3161
  %3163 = fsub <2 x double> %2958, %3162
  %3164 = select <2 x i1> %3134, <2 x double> %2958, <2 x double> %3163
  %3165 = fsub <2 x double> %2943, %3136
  br label %3166

3166:                                             ; preds = %2911, %3126
  %3167 = phi <2 x double> [ %2959, %2911 ], [ %3165, %3126 ]
  %3168 = phi <2 x double> [ %2967, %2911 ], [ %3139, %3126 ]
  %3169 = phi <2 x double> [ %2948, %2911 ], [ %3136, %3126 ]
  %3170 = phi <2 x double> [ %2958, %2911 ], [ %3164, %3126 ]
  store <2 x double> %3167, ptr %2961, align 16, !tbaa !26
  %3171 = getelementptr inbounds nuw i8, ptr %2915, i64 784
  store <2 x double> %3169, ptr %3171, align 16, !tbaa !26
  %3172 = getelementptr inbounds nuw i8, ptr %2915, i64 816
  store <2 x double> %2940, ptr %3172, align 16, !tbaa !26
  %3173 = getelementptr inbounds nuw i8, ptr %2915, i64 864
  store <2 x double> %2917, ptr %3173, align 16, !tbaa !26
  %3174 = getelementptr inbounds nuw i8, ptr %2915, i64 880
  store <2 x double> %2922, ptr %3174, align 16, !tbaa !26
  %3175 = getelementptr inbounds nuw i8, ptr %2915, i64 1744
  %3176 = load <2 x double>, ptr %3175, align 16, !tbaa !26
  %3177 = getelementptr inbounds nuw i8, ptr %2915, i64 1760
  %3178 = load <2 x double>, ptr %3177, align 16, !tbaa !26
  %3179 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3176, <2 x double> %2922, <2 x double> %3178)
  %3180 = getelementptr inbounds nuw i8, ptr %2915, i64 1584
  %3181 = load <2 x double>, ptr %3180, align 16, !tbaa !26
  %3182 = getelementptr inbounds nuw i8, ptr %2915, i64 1024
  %3183 = load <2 x double>, ptr %3182, align 16, !tbaa !26
  %3184 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2930, <2 x double> %3183, <2 x double> %3181)
  %3185 = getelementptr inbounds nuw i8, ptr %2915, i64 1216
  %3186 = load <2 x double>, ptr %3185, align 16, !tbaa !26
  %3187 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2936, <2 x double> %3186, <2 x double> %3184)
  %3188 = fdiv <2 x double> %3187, %2939
  %3189 = getelementptr inbounds nuw i8, ptr %2915, i64 832
  store <2 x double> %3188, ptr %3189, align 16, !tbaa !26
  %3190 = getelementptr inbounds nuw i8, ptr %2915, i64 1040
  %3191 = load <2 x double>, ptr %3190, align 16, !tbaa !26
  %3192 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2930, <2 x double> %3191, <2 x double> %3170)
  %3193 = getelementptr inbounds nuw i8, ptr %2915, i64 1232
  %3194 = load <2 x double>, ptr %3193, align 16, !tbaa !26
  %3195 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2936, <2 x double> %3194, <2 x double> %3192)
  %3196 = fdiv <2 x double> %3195, %2939
  %3197 = getelementptr inbounds nuw i8, ptr %2915, i64 848
  store <2 x double> %3196, ptr %3197, align 16, !tbaa !26
  %3198 = getelementptr inbounds nuw i8, ptr %2915, i64 1088
  %3199 = load <2 x double>, ptr %3198, align 16, !tbaa !26
  %3200 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2930, <2 x double> %3199, <2 x double> %3179)
  %3201 = getelementptr inbounds nuw i8, ptr %2915, i64 1280
  %3202 = load <2 x double>, ptr %3201, align 16, !tbaa !26
  %3203 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %2936, <2 x double> %3202, <2 x double> %3200)
  %3204 = fdiv <2 x double> %3203, %2939
  %3205 = getelementptr inbounds nuw i8, ptr %2915, i64 896
  store <2 x double> %3204, ptr %3205, align 16, !tbaa !26
  %3206 = fcmp ogt <2 x double> %2913, %3168
  %3207 = select <2 x i1> %3206, <2 x double> %2913, <2 x double> %3168
  %3208 = add nuw nsw i64 %2912, 1
  %3209 = load i64, ptr %157, align 8, !tbaa !20
  %3210 = icmp slt i64 %3208, %3209
  br i1 %3210, label %2911, label %3211, !llvm.loop !112

3211:                                             ; preds = %3166, %2725
  %3212 = phi i64 [ %2728, %2725 ], [ %3209, %3166 ]
  %3213 = phi <2 x double> [ zeroinitializer, %2725 ], [ %3207, %3166 ]
  %3214 = load <2 x double>, ptr %175, align 16, !tbaa !26
  %3215 = fadd <2 x double> %3214, splat (double 1.000000e+00)
  store <2 x double> %3215, ptr %175, align 16, !tbaa !26
  %3216 = load <2 x i64>, ptr %123, align 16, !tbaa !26
  %3217 = load <2 x double>, ptr %212, align 16, !tbaa !26
  %3218 = fcmp olt <2 x double> %3213, %3217
  %3219 = load i64, ptr %213, align 16, !tbaa !24
  %3220 = sitofp i64 %3219 to double
  %3221 = insertelement <2 x double> poison, double %3220, i64 0
  %3222 = shufflevector <2 x double> %3221, <2 x double> poison, <2 x i32> zeroinitializer
  %3223 = fcmp oge <2 x double> %3215, %3222
  %3224 = or <2 x i1> %3218, %3223
  %3225 = select <2 x i1> %3224, <2 x i64> %3216, <2 x i64> zeroinitializer
  store <2 x i64> %3225, ptr %146, align 16, !tbaa !26
  %3226 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3225)
  %3227 = icmp eq i64 %3226, 0
  br i1 %3227, label %524, label %3228, !llvm.loop !54

3228:                                             ; preds = %3211
  %3229 = icmp sgt i64 %3212, 0
  br i1 %3229, label %3230, label %3232

3230:                                             ; preds = %3228
  %3231 = icmp eq <2 x i64> %3225, zeroinitializer
  br label %3547

3232:                                             ; preds = %3595, %3228
  %3233 = phi i64 [ %3212, %3228 ], [ %3601, %3595 ]
  %3234 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %3235 = fadd <2 x double> %3234, splat (double 1.000000e+00)
  %3236 = icmp eq <2 x i64> %3225, zeroinitializer
  %3237 = select <2 x i1> %3236, <2 x double> %3234, <2 x double> %3235
  store <2 x double> %3237, ptr %214, align 16, !tbaa !26
  %3238 = fcmp ogt <2 x double> %3237, splat (double 4.000000e+01)
  %3239 = select <2 x i1> %3238, <2 x i64> %3225, <2 x i64> zeroinitializer
  %3240 = xor <2 x i64> %3239, %3225
  %3241 = load <2 x double>, ptr %140, align 16, !tbaa !26
  %3242 = fadd <2 x double> %3241, splat (double 1.000000e+00)
  %3243 = icmp eq <2 x i64> %3239, zeroinitializer
  %3244 = select <2 x i1> %3243, <2 x double> %3241, <2 x double> %3242
  store <2 x double> %3244, ptr %140, align 16, !tbaa !26
  %3245 = load <2 x double>, ptr %203, align 16, !tbaa !26
  %3246 = load <2 x double>, ptr %215, align 16, !tbaa !26
  %3247 = fsub <2 x double> %3245, %3246
  %3248 = tail call noundef <2 x double> @llvm.fabs.v2f64(<2 x double> %3247)
  %3249 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %3250 = fmul <2 x double> %3249, splat (double 1.500000e+00)
  %3251 = fcmp ogt <2 x double> %3248, %3250
  %3252 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %3253 = fcmp ogt <2 x double> %3252, splat (double 2.000000e-03)
  %3254 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %3255 = fcmp oeq <2 x double> %3254, zeroinitializer
  %3256 = and <2 x i1> %3251, %3255
  %3257 = and <2 x i1> %3253, %3256
  %3258 = fdiv <2 x double> %3249, %3248
  %3259 = select <2 x i1> %3257, <2 x i64> %3240, <2 x i64> zeroinitializer
  %3260 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %3261 = fcmp ogt <2 x double> %3260, %3252
  %3262 = select <2 x i1> %3261, <2 x double> %3260, <2 x double> %3252
  %3263 = select <2 x i1> %3257, <2 x double> zeroinitializer, <2 x double> %3262
  %3264 = icmp eq <2 x i64> %3259, zeroinitializer
  %3265 = select <2 x i1> %3264, <2 x double> %3260, <2 x double> %3263
  store <2 x double> %3265, ptr %156, align 16, !tbaa !26
  %3266 = fcmp ogt <2 x double> %3258, splat (double 5.000000e-02)
  %3267 = select <2 x i1> %3266, <2 x double> %3258, <2 x double> splat (double 5.000000e-02)
  %3268 = fcmp olt <2 x double> %3267, splat (double 0x3FEE666666666666)
  %3269 = select <2 x i1> %3268, <2 x double> %3267, <2 x double> splat (double 0x3FEE666666666666)
  %3270 = fmul <2 x double> %3252, %3269
  %3271 = fcmp ogt <2 x double> %3270, splat (double 0x3EB0C6F7A0B5ED8D)
  %3272 = select <2 x i1> %3271, <2 x double> %3270, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3273 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %3274 = select <2 x i1> %3264, <2 x double> %3273, <2 x double> %3272
  store <2 x double> %3274, ptr %152, align 16, !tbaa !26
  %3275 = load <2 x double>, ptr %137, align 16, !tbaa !26
  %3276 = fadd <2 x double> %3275, splat (double 1.000000e+00)
  %3277 = select <2 x i1> %3264, <2 x double> %3275, <2 x double> %3276
  store <2 x double> %3277, ptr %137, align 16, !tbaa !26
  %3278 = xor <2 x i64> %3259, %3240
  %3279 = icmp sgt i64 %3233, 0
  br i1 %3279, label %3280, label %3372

3280:                                             ; preds = %3232
  %3281 = load ptr, ptr %142, align 8, !tbaa !28
  %3282 = fcmp ogt <2 x double> %3252, splat (double 0x3E7AD7F29ABCAF48)
  %3283 = fcmp ogt <2 x double> %3252, splat (double 1.000000e-05)
  %3284 = fcmp ogt <2 x double> %3252, splat (double 1.000000e-04)
  br label %3285

3285:                                             ; preds = %3280, %3285
  %3286 = phi i64 [ 0, %3280 ], [ %3368, %3285 ]
  %3287 = phi <2 x i64> [ zeroinitializer, %3280 ], [ %3364, %3285 ]
  %3288 = phi <2 x i64> [ zeroinitializer, %3280 ], [ %3315, %3285 ]
  %3289 = phi <2 x double> [ splat (double 1.000000e+00), %3280 ], [ %3367, %3285 ]
  %3290 = getelementptr inbounds nuw %struct.Piece, ptr %3281, i64 %3286
  %3291 = getelementptr inbounds nuw i8, ptr %3290, i64 768
  %3292 = load <2 x double>, ptr %3291, align 16, !tbaa !26
  %3293 = getelementptr inbounds nuw i8, ptr %3290, i64 960
  %3294 = load <2 x double>, ptr %3293, align 16, !tbaa !26
  %3295 = getelementptr inbounds nuw i8, ptr %3290, i64 1840
  %3296 = load <2 x i64>, ptr %3295, align 16, !tbaa !26
  %3297 = xor <2 x i64> %3296, splat (i64 -1)
  %3298 = getelementptr inbounds nuw i8, ptr %3290, i64 224
  %3299 = load <2 x double>, ptr %3298, align 16, !tbaa !26
  %3300 = fmul <2 x double> %3299, splat (double 1.000000e-04)
  %3301 = fcmp ogt <2 x double> %3300, splat (double 0x3E7AD7F29ABCAF48)
  %3302 = fneg <2 x double> %3300
  %3303 = select <2 x i1> %3301, <2 x double> %3302, <2 x double> splat (double 0xBE7AD7F29ABCAF48)
  %3304 = fcmp olt <2 x double> %3292, %3303
  %3305 = select <2 x i1> %3304, <2 x i64> %3297, <2 x i64> zeroinitializer
  %3306 = fcmp ole <2 x double> %3294, zeroinitializer
  %3307 = select <2 x i1> %3306, <2 x i64> %3305, <2 x i64> zeroinitializer
  %3308 = getelementptr inbounds nuw i8, ptr %3290, i64 208
  %3309 = load <2 x double>, ptr %3308, align 16, !tbaa !26
  %3310 = fmul <2 x double> %3309, splat (double -3.000000e-07)
  %3311 = fcmp olt <2 x double> %3292, %3310
  %3312 = select <2 x i1> %3282, <2 x i1> %3311, <2 x i1> zeroinitializer
  %3313 = select <2 x i1> %3312, <2 x i64> %3307, <2 x i64> zeroinitializer
  %3314 = or <2 x i64> %3313, %3287
  %3315 = or <2 x i64> %3313, %3288
  %3316 = fcmp olt <2 x double> %3289, splat (double 3.000000e-01)
  %3317 = icmp eq <2 x i64> %3313, zeroinitializer
  %3318 = select <2 x i1> %3317, <2 x i1> splat (i1 true), <2 x i1> %3316
  %3319 = select <2 x i1> %3318, <2 x double> %3289, <2 x double> splat (double 3.000000e-01)
  %3320 = xor <2 x i64> %3307, splat (i64 -1)
  %3321 = and <2 x i64> %3305, %3320
  %3322 = select <2 x i1> %3283, <2 x i64> %3321, <2 x i64> zeroinitializer
  %3323 = fsub <2 x double> %3294, %3292
  %3324 = fdiv <2 x double> %3294, %3323
  %3325 = or <2 x i64> %3314, %3322
  %3326 = fcmp olt <2 x double> %3319, %3324
  %3327 = icmp eq <2 x i64> %3322, zeroinitializer
  %3328 = select <2 x i1> %3327, <2 x i1> splat (i1 true), <2 x i1> %3326
  %3329 = select <2 x i1> %3328, <2 x double> %3319, <2 x double> %3324
  %3330 = getelementptr inbounds nuw i8, ptr %3290, i64 944
  %3331 = load <2 x double>, ptr %3330, align 16, !tbaa !26
  %3332 = getelementptr inbounds nuw i8, ptr %3290, i64 752
  %3333 = load <2 x double>, ptr %3332, align 16, !tbaa !26
  %3334 = getelementptr inbounds nuw i8, ptr %3290, i64 1824
  %3335 = load <2 x double>, ptr %3334, align 16, !tbaa !26
  %3336 = fcmp oeq <2 x double> %3335, zeroinitializer
  %3337 = getelementptr inbounds nuw i8, ptr %3290, i64 368
  %3338 = load <2 x double>, ptr %3337, align 16, !tbaa !26
  %3339 = fmul <2 x double> %3338, splat (double 0x3FEFF7CED916872B)
  %3340 = fcmp olt <2 x double> %3333, %3339
  %3341 = and <2 x i1> %3336, %3340
  %3342 = and <2 x i1> %3284, %3341
  %3343 = fsub <2 x double> %3331, %3338
  %3344 = fsub <2 x double> %3331, %3333
  %3345 = fdiv <2 x double> %3343, %3344
  %3346 = fcmp uge <2 x double> %3329, %3345
  %3347 = select <2 x i1> %3342, <2 x i1> %3346, <2 x i1> zeroinitializer
  %3348 = select <2 x i1> %3347, <2 x double> %3345, <2 x double> %3329
  %3349 = fcmp oeq <2 x double> %3335, splat (double 1.000000e+00)
  %3350 = getelementptr inbounds nuw i8, ptr %3290, i64 816
  %3351 = load <2 x double>, ptr %3350, align 16, !tbaa !26
  %3352 = getelementptr inbounds nuw i8, ptr %3290, i64 400
  %3353 = load <2 x double>, ptr %3352, align 16, !tbaa !26
  %3354 = fmul <2 x double> %3353, splat (double 1.000100e+00)
  %3355 = fcmp ogt <2 x double> %3351, %3354
  %3356 = and <2 x i1> %3349, %3355
  %3357 = and <2 x i1> %3284, %3356
  %3358 = getelementptr inbounds nuw i8, ptr %3290, i64 1008
  %3359 = load <2 x double>, ptr %3358, align 16, !tbaa !26
  %3360 = fsub <2 x double> %3353, %3359
  %3361 = fsub <2 x double> %3351, %3359
  %3362 = fdiv <2 x double> %3360, %3361
  %3363 = select <2 x i1> %3356, <2 x i1> %3284, <2 x i1> %3342
  %3364 = select <2 x i1> %3363, <2 x i64> splat (i64 -1), <2 x i64> %3325
  %3365 = fcmp uge <2 x double> %3348, %3362
  %3366 = select <2 x i1> %3357, <2 x i1> %3365, <2 x i1> zeroinitializer
  %3367 = select <2 x i1> %3366, <2 x double> %3362, <2 x double> %3348
  %3368 = add nuw nsw i64 %3286, 1
  %3369 = icmp eq i64 %3368, %3233
  br i1 %3369, label %3370, label %3285, !llvm.loop !113

3370:                                             ; preds = %3285
  %3371 = icmp eq <2 x i64> %3315, zeroinitializer
  br label %3372

3372:                                             ; preds = %3370, %3232
  %3373 = phi <2 x double> [ splat (double 1.000000e+00), %3232 ], [ %3367, %3370 ]
  %3374 = phi <2 x i1> [ splat (i1 true), %3232 ], [ %3371, %3370 ]
  %3375 = phi <2 x i64> [ zeroinitializer, %3232 ], [ %3364, %3370 ]
  %3376 = and <2 x i64> %3375, %3278
  %3377 = fcmp ogt <2 x double> %3265, %3252
  %3378 = select <2 x i1> %3377, <2 x double> %3265, <2 x double> %3252
  %3379 = select <2 x i1> %3374, <2 x double> %3378, <2 x double> zeroinitializer
  %3380 = icmp eq <2 x i64> %3376, zeroinitializer
  %3381 = select <2 x i1> %3380, <2 x double> %3265, <2 x double> %3379
  %3382 = fcmp ogt <2 x double> %3373, splat (double 5.000000e-02)
  %3383 = select <2 x i1> %3382, <2 x double> %3373, <2 x double> splat (double 5.000000e-02)
  %3384 = fcmp olt <2 x double> %3383, splat (double 0x3FEE666666666666)
  %3385 = select <2 x i1> %3384, <2 x double> %3383, <2 x double> splat (double 0x3FEE666666666666)
  %3386 = fmul <2 x double> %3252, %3385
  %3387 = fcmp ogt <2 x double> %3386, splat (double 0x3EB0C6F7A0B5ED8D)
  %3388 = select <2 x i1> %3387, <2 x double> %3386, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3389 = select <2 x i1> %3380, <2 x double> %3274, <2 x double> %3388
  %3390 = fadd <2 x double> %3277, splat (double 1.000000e+00)
  %3391 = select <2 x i1> %3380, <2 x double> %3277, <2 x double> %3390
  %3392 = xor <2 x i64> %3376, %3278
  %3393 = load <2 x double>, ptr %217, align 16, !tbaa !26
  %3394 = fmul <2 x double> %3393, splat (double 5.000000e-01)
  %3395 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %3396 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %3397 = fneg <2 x double> %3394
  %3398 = icmp eq <2 x i64> %3396, zeroinitializer
  %3399 = select <2 x i1> %3398, <2 x double> %3397, <2 x double> %3394
  %3400 = fadd <2 x double> %3395, %3399
  %3401 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %3402 = fsub <2 x double> %3401, %3400
  %3403 = load <2 x double>, ptr %164, align 16, !tbaa !26
  %3404 = fsub <2 x double> %3403, %3400
  %3405 = fneg <2 x double> %3402
  %3406 = select <2 x i1> %3398, <2 x double> %3405, <2 x double> %3402
  %3407 = fneg <2 x double> %3404
  %3408 = select <2 x i1> %3398, <2 x double> %3407, <2 x double> %3404
  %3409 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %3410 = fcmp oeq <2 x double> %3409, zeroinitializer
  %3411 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %3412 = fcmp oeq <2 x double> %3411, zeroinitializer
  %3413 = and <2 x i1> %3410, %3412
  %3414 = fcmp olt <2 x double> %3406, splat (double -1.000000e-03)
  %3415 = and <2 x i1> %3413, %3414
  %3416 = fcmp ogt <2 x double> %3408, splat (double 4.000000e-03)
  %3417 = and <2 x i1> %3416, %3415
  %3418 = and <2 x i1> %3253, %3417
  %3419 = fsub <2 x double> %3406, %3408
  %3420 = fdiv <2 x double> %3406, %3419
  %3421 = select <2 x i1> %3418, <2 x i64> %3392, <2 x i64> zeroinitializer
  %3422 = fcmp ogt <2 x double> %3381, %3252
  %3423 = icmp eq <2 x i64> %3421, zeroinitializer
  %3424 = select <2 x i1> %3423, <2 x i1> splat (i1 true), <2 x i1> %3422
  %3425 = select <2 x i1> %3424, <2 x double> %3381, <2 x double> %3252
  store <2 x double> %3425, ptr %156, align 16, !tbaa !26
  %3426 = fcmp ogt <2 x double> %3420, splat (double 5.000000e-02)
  %3427 = select <2 x i1> %3426, <2 x double> %3420, <2 x double> splat (double 5.000000e-02)
  %3428 = fcmp olt <2 x double> %3427, splat (double 0x3FEE666666666666)
  %3429 = select <2 x i1> %3428, <2 x double> %3427, <2 x double> splat (double 0x3FEE666666666666)
  %3430 = fmul <2 x double> %3252, %3429
  %3431 = fcmp ogt <2 x double> %3430, splat (double 0x3EB0C6F7A0B5ED8D)
  %3432 = select <2 x i1> %3431, <2 x double> %3430, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3433 = select <2 x i1> %3423, <2 x double> %3389, <2 x double> %3432
  store <2 x double> %3433, ptr %152, align 16, !tbaa !26
  %3434 = fadd <2 x double> %3391, splat (double 1.000000e+00)
  %3435 = select <2 x i1> %3423, <2 x double> %3391, <2 x double> %3434
  store <2 x double> %3435, ptr %137, align 16, !tbaa !26
  %3436 = xor <2 x i64> %3421, %3392
  %3437 = load <2 x double>, ptr %218, align 16, !tbaa !26
  %3438 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %3439 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %3440 = fsub <2 x double> %3438, %3439
  %3441 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %3442 = fcmp une <2 x double> %3441, splat (double 1.000000e+00)
  %3443 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %3444 = fsub <2 x double> %3401, %3443
  %3445 = select <2 x i1> %3442, <2 x double> splat (double -1.000000e+00), <2 x double> %3444
  %3446 = fcmp une <2 x double> %3441, splat (double 2.000000e+00)
  %3447 = fsub <2 x double> %3437, %3443
  %3448 = select <2 x i1> %3446, <2 x double> %3445, <2 x double> %3447
  %3449 = fcmp une <2 x double> %3441, splat (double 3.000000e+00)
  %3450 = fsub <2 x double> %3440, %3443
  %3451 = select <2 x i1> %3449, <2 x double> %3448, <2 x double> %3450
  %3452 = fcmp une <2 x double> %3441, splat (double 4.000000e+00)
  %3453 = fsub <2 x double> %3443, %3440
  %3454 = select <2 x i1> %3452, <2 x double> %3451, <2 x double> %3453
  br i1 %3279, label %3455, label %3503

3455:                                             ; preds = %3372
  %3456 = load ptr, ptr %142, align 8, !tbaa !28
  %3457 = and i64 %3233, 3
  %3458 = icmp ult i64 %3233, 4
  br i1 %3458, label %3487, label %3459

3459:                                             ; preds = %3455
  %3460 = and i64 %3233, 9223372036854775804
  br label %3461

3461:                                             ; preds = %3461, %3459
  %3462 = phi i64 [ 0, %3459 ], [ %3484, %3461 ]
  %3463 = phi <2 x double> [ splat (double 1.000000e+09), %3459 ], [ %3483, %3461 ]
  %3464 = phi i64 [ 0, %3459 ], [ %3485, %3461 ]
  %3465 = getelementptr inbounds nuw %struct.Piece, ptr %3456, i64 %3462, i32 35
  %3466 = load <2 x double>, ptr %3465, align 16, !tbaa !26
  %3467 = fcmp olt <2 x double> %3463, %3466
  %3468 = select <2 x i1> %3467, <2 x double> %3463, <2 x double> %3466
  %3469 = or disjoint i64 %3462, 1
  %3470 = getelementptr inbounds nuw %struct.Piece, ptr %3456, i64 %3469, i32 35
  %3471 = load <2 x double>, ptr %3470, align 16, !tbaa !26
  %3472 = fcmp olt <2 x double> %3468, %3471
  %3473 = select <2 x i1> %3472, <2 x double> %3468, <2 x double> %3471
  %3474 = or disjoint i64 %3462, 2
  %3475 = getelementptr inbounds nuw %struct.Piece, ptr %3456, i64 %3474, i32 35
  %3476 = load <2 x double>, ptr %3475, align 16, !tbaa !26
  %3477 = fcmp olt <2 x double> %3473, %3476
  %3478 = select <2 x i1> %3477, <2 x double> %3473, <2 x double> %3476
  %3479 = or disjoint i64 %3462, 3
  %3480 = getelementptr inbounds nuw %struct.Piece, ptr %3456, i64 %3479, i32 35
  %3481 = load <2 x double>, ptr %3480, align 16, !tbaa !26
  %3482 = fcmp olt <2 x double> %3478, %3481
  %3483 = select <2 x i1> %3482, <2 x double> %3478, <2 x double> %3481
  %3484 = add nuw nsw i64 %3462, 4
  %3485 = add i64 %3464, 4
  %3486 = icmp eq i64 %3485, %3460
  br i1 %3486, label %3487, label %3461, !llvm.loop !114

3487:                                             ; preds = %3461, %3455
  %3488 = phi <2 x double> [ poison, %3455 ], [ %3483, %3461 ]
  %3489 = phi i64 [ 0, %3455 ], [ %3484, %3461 ]
  %3490 = phi <2 x double> [ splat (double 1.000000e+09), %3455 ], [ %3483, %3461 ]
  %3491 = icmp eq i64 %3457, 0
  br i1 %3491, label %3503, label %3492

3492:                                             ; preds = %3487, %3492
  %3493 = phi i64 [ %3500, %3492 ], [ %3489, %3487 ]
  %3494 = phi <2 x double> [ %3499, %3492 ], [ %3490, %3487 ]
  %3495 = phi i64 [ %3501, %3492 ], [ 0, %3487 ]
  %3496 = getelementptr inbounds nuw %struct.Piece, ptr %3456, i64 %3493, i32 35
  %3497 = load <2 x double>, ptr %3496, align 16, !tbaa !26
  %3498 = fcmp olt <2 x double> %3494, %3497
  %3499 = select <2 x i1> %3498, <2 x double> %3494, <2 x double> %3497
  %3500 = add nuw nsw i64 %3493, 1
  %3501 = add i64 %3495, 1
  %3502 = icmp eq i64 %3501, %3457
  br i1 %3502, label %3503, label %3492, !llvm.loop !115

3503:                                             ; preds = %3487, %3492, %3372
  %3504 = phi <2 x double> [ splat (double 1.000000e+09), %3372 ], [ %3488, %3487 ], [ %3499, %3492 ]
  %3505 = load <2 x double>, ptr %183, align 16, !tbaa !26
  %3506 = fsub <2 x double> %3505, %3439
  %3507 = fsub <2 x double> %3403, %3443
  %3508 = select <2 x i1> %3442, <2 x double> splat (double -1.000000e+00), <2 x double> %3507
  %3509 = fsub <2 x double> %3504, %3443
  %3510 = select <2 x i1> %3446, <2 x double> %3508, <2 x double> %3509
  %3511 = fsub <2 x double> %3506, %3443
  %3512 = select <2 x i1> %3449, <2 x double> %3510, <2 x double> %3511
  %3513 = fsub <2 x double> %3443, %3506
  %3514 = select <2 x i1> %3452, <2 x double> %3512, <2 x double> %3513
  %3515 = fcmp une <2 x double> %3441, zeroinitializer
  %3516 = fcmp oge <2 x double> %3252, splat (double 5.000000e-02)
  %3517 = and <2 x i1> %3516, %3515
  %3518 = fcmp olt <2 x double> %3454, zeroinitializer
  %3519 = and <2 x i1> %3517, %3518
  %3520 = fsub <2 x double> %3514, %3454
  %3521 = fmul <2 x double> %3520, splat (double 2.000000e-02)
  %3522 = fcmp ogt <2 x double> %3514, %3521
  %3523 = and <2 x i1> %3519, %3522
  %3524 = fsub <2 x double> %3454, %3514
  %3525 = fdiv <2 x double> %3454, %3524
  %3526 = fcmp olt <2 x double> %3525, splat (double 0x3FEE666666666666)
  %3527 = and <2 x i1> %3526, %3523
  %3528 = select <2 x i1> %3527, <2 x i64> %3436, <2 x i64> zeroinitializer
  %3529 = fcmp ogt <2 x double> %3425, %3252
  %3530 = icmp eq <2 x i64> %3528, zeroinitializer
  %3531 = select <2 x i1> %3530, <2 x i1> splat (i1 true), <2 x i1> %3529
  %3532 = select <2 x i1> %3531, <2 x double> %3425, <2 x double> %3252
  store <2 x double> %3532, ptr %156, align 16, !tbaa !26
  %3533 = fcmp ogt <2 x double> %3525, splat (double 5.000000e-02)
  %3534 = select <2 x i1> %3533, <2 x double> %3525, <2 x double> splat (double 5.000000e-02)
  %3535 = fcmp olt <2 x double> %3534, splat (double 0x3FEE666666666666)
  %3536 = select <2 x i1> %3535, <2 x double> %3534, <2 x double> splat (double 0x3FEE666666666666)
  %3537 = fmul <2 x double> %3252, %3536
  %3538 = fcmp ogt <2 x double> %3537, splat (double 0x3EB0C6F7A0B5ED8D)
  %3539 = select <2 x i1> %3538, <2 x double> %3537, <2 x double> splat (double 0x3EB0C6F7A0B5ED8D)
  %3540 = select <2 x i1> %3530, <2 x double> %3433, <2 x double> %3539
  store <2 x double> %3540, ptr %152, align 16, !tbaa !26
  %3541 = fadd <2 x double> %3435, splat (double 1.000000e+00)
  %3542 = select <2 x i1> %3530, <2 x double> %3435, <2 x double> %3541
  store <2 x double> %3542, ptr %137, align 16, !tbaa !26
  %3543 = xor <2 x i64> %3528, %3436
  %3544 = or <2 x i64> %3543, %3239
  %3545 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3544)
  %3546 = icmp eq i64 %3545, 0
  br i1 %3546, label %524, label %3603

3547:                                             ; preds = %3230, %3595
  %3548 = phi i64 [ 0, %3230 ], [ %3600, %3595 ]
  %3549 = load ptr, ptr %142, align 8, !tbaa !28
  %3550 = getelementptr inbounds nuw %struct.Piece, ptr %3549, i64 %3548
  %3551 = getelementptr inbounds nuw i8, ptr %3550, i64 1896
  %3552 = load ptr, ptr %3551, align 8, !tbaa !57
  %3553 = load <2 x double>, ptr %3552, align 16, !tbaa !26
  %3554 = getelementptr inbounds nuw i8, ptr %3550, i64 336
  %3555 = load <2 x double>, ptr %3554, align 16, !tbaa !26
  %3556 = getelementptr inbounds nuw i8, ptr %3552, i64 16
  %3557 = load <2 x double>, ptr %3556, align 16, !tbaa !26
  %3558 = fsub <2 x double> %3557, %3553
  %3559 = fneg <2 x double> %3555
  %3560 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3559, <2 x double> %3558, <2 x double> %3553)
  %3561 = getelementptr inbounds nuw i8, ptr %3550, i64 1888
  %3562 = load i64, ptr %3561, align 16, !tbaa !31
  %3563 = icmp eq i64 %3562, 0
  br i1 %3563, label %3595, label %3564

3564:                                             ; preds = %3547
  %3565 = getelementptr <2 x double>, ptr %3552, i64 %3562
  %3566 = getelementptr i8, ptr %3565, i64 -16
  %3567 = load <2 x double>, ptr %3566, align 16, !tbaa !26
  %3568 = load <2 x double>, ptr %3565, align 16, !tbaa !26
  %3569 = getelementptr inbounds nuw i8, ptr %3550, i64 720
  %3570 = load <2 x double>, ptr %3569, align 16, !tbaa !26
  %3571 = getelementptr inbounds nuw i8, ptr %3550, i64 736
  %3572 = load <2 x double>, ptr %3571, align 16, !tbaa !26
  %3573 = getelementptr inbounds nuw i8, ptr %3550, i64 16
  %3574 = load <2 x double>, ptr %3573, align 16, !tbaa !26
  %3575 = fsub <2 x double> %3572, %3574
  %3576 = fmul <2 x double> %3570, %3575
  %3577 = getelementptr inbounds nuw i8, ptr %3550, i64 144
  %3578 = load <2 x double>, ptr %3577, align 16, !tbaa !26
  %3579 = getelementptr inbounds nuw i8, ptr %3550, i64 704
  %3580 = load <2 x double>, ptr %3579, align 16, !tbaa !26
  %3581 = fdiv <2 x double> %3578, %3580
  %3582 = getelementptr inbounds nuw i8, ptr %3550, i64 48
  %3583 = load <2 x double>, ptr %3582, align 16, !tbaa !26
  %3584 = getelementptr inbounds nuw i8, ptr %3550, i64 64
  %3585 = load <2 x double>, ptr %3584, align 16, !tbaa !26
  %3586 = getelementptr inbounds nuw i8, ptr %3550, i64 80
  %3587 = load <2 x double>, ptr %3586, align 16, !tbaa !26
  %3588 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3568, <2 x double> %3587, <2 x double> %3585)
  %3589 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3568, <2 x double> %3588, <2 x double> %3583)
  %3590 = fdiv <2 x double> %3589, %3576
  %3591 = fmul <2 x double> %3568, %3590
  %3592 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3581, <2 x double> %3567, <2 x double> %3591)
  %3593 = fadd <2 x double> %3581, %3590
  %3594 = fdiv <2 x double> %3592, %3593
  br label %3595

3595:                                             ; preds = %3547, %3564
  %3596 = phi <2 x double> [ %3594, %3564 ], [ %3560, %3547 ]
  %3597 = getelementptr inbounds nuw i8, ptr %3550, i64 1808
  %3598 = load <2 x double>, ptr %3597, align 16, !tbaa !26
  %3599 = select <2 x i1> %3231, <2 x double> %3598, <2 x double> %3596
  store <2 x double> %3599, ptr %3597, align 16, !tbaa !26
  %3600 = add nuw nsw i64 %3548, 1
  %3601 = load i64, ptr %157, align 8, !tbaa !20
  %3602 = icmp slt i64 %3600, %3601
  br i1 %3602, label %3547, label %3232, !llvm.loop !117

3603:                                             ; preds = %3503
  %3604 = icmp eq <2 x i64> %3544, zeroinitializer
  %3605 = select <2 x i1> %3604, <2 x double> %3246, <2 x double> %3245
  store <2 x double> %3605, ptr %215, align 16, !tbaa !26
  %3606 = load <2 x double>, ptr %166, align 16, !tbaa !26
  %3607 = select <2 x i1> %3604, <2 x double> %3606, <2 x double> %3401
  store <2 x double> %3607, ptr %166, align 16, !tbaa !26
  %3608 = select <2 x i1> %3604, <2 x double> %3401, <2 x double> %3403
  store <2 x double> %3608, ptr %165, align 16, !tbaa !26
  %3609 = load <2 x double>, ptr %247, align 16, !tbaa !26
  %3610 = select <2 x i1> %3604, <2 x double> %3609, <2 x double> %3438
  store <2 x double> %3610, ptr %247, align 16, !tbaa !26
  %3611 = select <2 x i1> %3604, <2 x double> %3438, <2 x double> %3505
  store <2 x double> %3611, ptr %248, align 16, !tbaa !26
  %3612 = load <2 x double>, ptr %250, align 16, !tbaa !26
  %3613 = load <2 x double>, ptr %249, align 16, !tbaa !26
  %3614 = select <2 x i1> %3604, <2 x double> %3613, <2 x double> %3612
  store <2 x double> %3614, ptr %249, align 16, !tbaa !26
  %3615 = load <2 x double>, ptr %251, align 16, !tbaa !26
  %3616 = select <2 x i1> %3604, <2 x double> %3612, <2 x double> %3615
  store <2 x double> %3616, ptr %250, align 16, !tbaa !26
  %3617 = load <2 x double>, ptr %253, align 16, !tbaa !26
  %3618 = load <2 x double>, ptr %252, align 16, !tbaa !26
  %3619 = select <2 x i1> %3604, <2 x double> %3618, <2 x double> %3617
  store <2 x double> %3619, ptr %252, align 16, !tbaa !26
  %3620 = load <2 x double>, ptr %254, align 16, !tbaa !26
  %3621 = select <2 x i1> %3604, <2 x double> %3617, <2 x double> %3620
  store <2 x double> %3621, ptr %253, align 16, !tbaa !26
  %3622 = load <2 x double>, ptr %256, align 16, !tbaa !26
  %3623 = load <2 x double>, ptr %255, align 16, !tbaa !26
  %3624 = select <2 x i1> %3604, <2 x double> %3623, <2 x double> %3622
  store <2 x double> %3624, ptr %255, align 16, !tbaa !26
  %3625 = load <2 x double>, ptr %257, align 16, !tbaa !26
  %3626 = select <2 x i1> %3604, <2 x double> %3622, <2 x double> %3625
  store <2 x double> %3626, ptr %256, align 16, !tbaa !26
  %3627 = load <2 x double>, ptr %259, align 16, !tbaa !26
  %3628 = load <2 x double>, ptr %258, align 16, !tbaa !26
  %3629 = select <2 x i1> %3604, <2 x double> %3628, <2 x double> %3627
  store <2 x double> %3629, ptr %258, align 16, !tbaa !26
  %3630 = load <2 x double>, ptr %260, align 16, !tbaa !26
  %3631 = select <2 x i1> %3604, <2 x double> %3627, <2 x double> %3630
  store <2 x double> %3631, ptr %259, align 16, !tbaa !26
  %3632 = xor <2 x i64> %3544, splat (i64 -1)
  br i1 %3279, label %3633, label %4017

3633:                                             ; preds = %3603, %3973
  %3634 = phi i64 [ %3985, %3973 ], [ 0, %3603 ]
  %3635 = load ptr, ptr %142, align 8, !tbaa !28
  %3636 = getelementptr inbounds nuw %struct.Piece, ptr %3635, i64 %3634
  %3637 = getelementptr inbounds nuw i8, ptr %3636, i64 416
  %3638 = load <2 x double>, ptr %3637, align 16, !tbaa !26
  %3639 = fcmp ogt <2 x double> %3638, zeroinitializer
  %3640 = bitcast <2 x i1> %3639 to i2
  %3641 = icmp eq i2 %3640, 0
  %3642 = load i64, ptr %132, align 16, !tbaa !21
  br i1 %3641, label %3900, label %3643

3643:                                             ; preds = %3633
  %3644 = add i64 %3642, -1
  %3645 = getelementptr inbounds nuw i8, ptr %3636, i64 1104
  %3646 = load <2 x double>, ptr %3645, align 16, !tbaa !26
  %3647 = getelementptr inbounds nuw i8, ptr %3636, i64 912
  %3648 = load <2 x double>, ptr %3647, align 16, !tbaa !26
  %3649 = getelementptr inbounds nuw i8, ptr %3636, i64 1888
  %3650 = load i64, ptr %3649, align 16, !tbaa !31
  %3651 = icmp sgt i64 %3642, %3650
  br i1 %3651, label %3660, label %3652

3652:                                             ; preds = %3643
  %3653 = getelementptr inbounds nuw i8, ptr %3636, i64 1984
  %3654 = load ptr, ptr %3653, align 16, !tbaa !67
  %3655 = getelementptr inbounds <2 x double>, ptr %3654, i64 %3644
  %3656 = load <2 x double>, ptr %3655, align 16, !tbaa !26
  %3657 = getelementptr inbounds nuw i8, ptr %3636, i64 384
  %3658 = load <2 x double>, ptr %3657, align 16, !tbaa !26
  %3659 = fmul <2 x double> %3656, %3658
  br label %3669

3660:                                             ; preds = %3643
  %3661 = getelementptr inbounds nuw i8, ptr %3636, i64 384
  %3662 = load <2 x double>, ptr %3661, align 16, !tbaa !26
  %3663 = getelementptr inbounds nuw i8, ptr %3636, i64 1984
  %3664 = load ptr, ptr %3663, align 16, !tbaa !67
  %3665 = getelementptr inbounds <2 x double>, ptr %3664, i64 %3644
  %3666 = load <2 x double>, ptr %3665, align 16, !tbaa !26
  %3667 = fsub <2 x double> %3646, %3662
  %3668 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3666, <2 x double> %3667, <2 x double> %3662)
  br label %3669

3669:                                             ; preds = %3660, %3652
  %3670 = phi <2 x double> [ %3658, %3652 ], [ %3662, %3660 ]
  %3671 = phi <2 x double> [ %3659, %3652 ], [ %3668, %3660 ]
  %3672 = getelementptr inbounds nuw i8, ptr %3636, i64 752
  %3673 = load <2 x double>, ptr %3672, align 16, !tbaa !26
  %3674 = fcmp ole <2 x double> %3671, %3673
  %3675 = getelementptr inbounds nuw i8, ptr %3636, i64 1824
  %3676 = load <2 x double>, ptr %3675, align 16, !tbaa !26
  %3677 = fcmp oeq <2 x double> %3676, zeroinitializer
  %3678 = select <2 x i1> %3677, <2 x i1> %3674, <2 x i1> zeroinitializer
  %3679 = select <2 x i1> %3678, <2 x i64> %3544, <2 x i64> zeroinitializer
  %3680 = xor <2 x i64> %3679, %3544
  %3681 = fsub <2 x double> %3646, %3648
  %3682 = getelementptr inbounds nuw i8, ptr %3636, i64 384
  %3683 = fsub <2 x double> %3648, %3670
  %3684 = fdiv <2 x double> %3681, %3683
  %3685 = getelementptr inbounds nuw i8, ptr %3636, i64 1928
  %3686 = load ptr, ptr %3685, align 8, !tbaa !64
  %3687 = getelementptr inbounds <2 x double>, ptr %3686, i64 %3650
  %3688 = load <2 x double>, ptr %3687, align 16, !tbaa !26
  %3689 = getelementptr inbounds nuw i8, ptr %3636, i64 1936
  %3690 = load ptr, ptr %3689, align 16, !tbaa !47
  %3691 = getelementptr inbounds <2 x double>, ptr %3690, i64 %3650
  %3692 = load <2 x double>, ptr %3691, align 16, !tbaa !26
  %3693 = icmp eq <2 x i64> %3679, zeroinitializer
  %3694 = select <2 x i1> %3693, <2 x double> %3692, <2 x double> %3688
  store <2 x double> %3694, ptr %3691, align 16, !tbaa !26
  %3695 = load i64, ptr %3649, align 16, !tbaa !31
  %3696 = add nsw i64 %3695, 1
  %3697 = icmp slt i64 %3696, %3644
  br i1 %3697, label %3698, label %3702

3698:                                             ; preds = %3669
  %3699 = getelementptr inbounds nuw i8, ptr %3636, i64 2000
  br label %3744

3700:                                             ; preds = %3744
  %3701 = load i64, ptr %3649, align 16, !tbaa !31
  br label %3702

3702:                                             ; preds = %3700, %3669
  %3703 = phi i64 [ %3695, %3669 ], [ %3701, %3700 ]
  %3704 = phi <2 x double> [ %3688, %3669 ], [ %3749, %3700 ]
  %3705 = icmp sgt i64 %3642, %3703
  br i1 %3705, label %3713, label %3706

3706:                                             ; preds = %3702
  %3707 = getelementptr inbounds nuw i8, ptr %3636, i64 1984
  %3708 = load ptr, ptr %3707, align 16, !tbaa !67
  %3709 = getelementptr inbounds <2 x double>, ptr %3708, i64 %3644
  %3710 = load <2 x double>, ptr %3709, align 16, !tbaa !26
  %3711 = load <2 x double>, ptr %3682, align 16, !tbaa !26
  %3712 = fmul <2 x double> %3710, %3711
  br label %3721

3713:                                             ; preds = %3702
  %3714 = load <2 x double>, ptr %3682, align 16, !tbaa !26
  %3715 = getelementptr inbounds nuw i8, ptr %3636, i64 1984
  %3716 = load ptr, ptr %3715, align 16, !tbaa !67
  %3717 = getelementptr inbounds <2 x double>, ptr %3716, i64 %3644
  %3718 = load <2 x double>, ptr %3717, align 16, !tbaa !26
  %3719 = fsub <2 x double> %3648, %3714
  %3720 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3718, <2 x double> %3719, <2 x double> %3714)
  br label %3721

3721:                                             ; preds = %3713, %3706
  %3722 = phi <2 x double> [ %3712, %3706 ], [ %3720, %3713 ]
  %3723 = load ptr, ptr %3685, align 8, !tbaa !64
  %3724 = getelementptr inbounds <2 x double>, ptr %3723, i64 %3644
  %3725 = load <2 x double>, ptr %3724, align 16, !tbaa !26
  %3726 = load ptr, ptr %3689, align 16, !tbaa !47
  %3727 = getelementptr inbounds <2 x double>, ptr %3726, i64 %3644
  %3728 = fsub <2 x double> %3704, %3725
  %3729 = fsub <2 x double> %3671, %3722
  %3730 = load <2 x double>, ptr %3672, align 16, !tbaa !26
  %3731 = fsub <2 x double> %3730, %3722
  %3732 = fdiv <2 x double> %3729, %3731
  %3733 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3728, <2 x double> %3732, <2 x double> %3725)
  %3734 = load <2 x double>, ptr %3727, align 16, !tbaa !26
  %3735 = select <2 x i1> %3693, <2 x double> %3734, <2 x double> %3733
  store <2 x double> %3735, ptr %3727, align 16, !tbaa !26
  %3736 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %3680)
  %3737 = icmp eq i64 %3736, 0
  br i1 %3737, label %3898, label %3738

3738:                                             ; preds = %3721
  %3739 = getelementptr inbounds nuw i8, ptr %3636, i64 1984
  %3740 = getelementptr inbounds nuw i8, ptr %3636, i64 784
  %3741 = getelementptr inbounds nuw i8, ptr %3636, i64 208
  %3742 = extractelement <2 x i64> %3680, i64 0
  %3743 = extractelement <2 x i64> %3680, i64 1
  br label %3762

3744:                                             ; preds = %3698, %3744
  %3745 = phi i64 [ %3696, %3698 ], [ %3760, %3744 ]
  %3746 = phi <2 x double> [ %3688, %3698 ], [ %3749, %3744 ]
  %3747 = load ptr, ptr %3685, align 8, !tbaa !64
  %3748 = getelementptr inbounds <2 x double>, ptr %3747, i64 %3745
  %3749 = load <2 x double>, ptr %3748, align 16, !tbaa !26
  %3750 = load ptr, ptr %3689, align 16, !tbaa !47
  %3751 = getelementptr inbounds <2 x double>, ptr %3750, i64 %3745
  %3752 = fsub <2 x double> %3746, %3749
  %3753 = load ptr, ptr %3699, align 16, !tbaa !118
  %3754 = getelementptr inbounds <2 x double>, ptr %3753, i64 %3745
  %3755 = load <2 x double>, ptr %3754, align 16, !tbaa !26
  %3756 = fmul <2 x double> %3684, %3755
  %3757 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %3752, <2 x double> %3756, <2 x double> %3749)
  %3758 = load <2 x double>, ptr %3751, align 16, !tbaa !26
  %3759 = select <2 x i1> %3693, <2 x double> %3758, <2 x double> %3757
  store <2 x double> %3759, ptr %3751, align 16, !tbaa !26
  %3760 = add nsw i64 %3745, 1
  %3761 = icmp eq i64 %3760, %3644
  br i1 %3761, label %3700, label %3744, !llvm.loop !119

3762:                                             ; preds = %3738, %3897
  %3763 = phi i1 [ true, %3738 ], [ false, %3897 ]
  %3764 = phi i64 [ %3742, %3738 ], [ %3743, %3897 ]
  %3765 = phi i64 [ 0, %3738 ], [ 1, %3897 ]
  %3766 = icmp eq i64 %3764, 0
  br i1 %3766, label %3897, label %3767

3767:                                             ; preds = %3762
  %3768 = load i64, ptr %132, align 16, !tbaa !21
  %3769 = load i64, ptr %3649, align 16, !tbaa !31
  %3770 = getelementptr inbounds nuw double, ptr %3682, i64 %3765
  %3771 = load double, ptr %3770, align 8, !tbaa !42
  %3772 = getelementptr inbounds nuw double, ptr %3672, i64 %3765
  %3773 = load double, ptr %3772, align 8, !tbaa !42
  %3774 = add nsw i64 %3768, -1
  %3775 = icmp sgt i64 %3768, %3769
  br i1 %3775, label %3776, label %3897

3776:                                             ; preds = %3767
  %3777 = getelementptr inbounds nuw double, ptr %3647, i64 %3765
  %3778 = load double, ptr %3777, align 8, !tbaa !42
  %3779 = getelementptr inbounds nuw double, ptr %3645, i64 %3765
  %3780 = load double, ptr %3779, align 8, !tbaa !42
  %3781 = load ptr, ptr %3739, align 16
  %3782 = getelementptr i8, ptr %3781, i64 16
  %3783 = getelementptr double, ptr %3782, i64 %3765
  %3784 = fsub double %3778, %3771
  %3785 = getelementptr double, ptr %3781, i64 %3765
  %3786 = fsub double %3780, %3771
  %3787 = load ptr, ptr %3685, align 8, !tbaa !64
  %3788 = getelementptr double, ptr %3787, i64 %3765
  %3789 = load ptr, ptr %3689, align 16, !tbaa !47
  %3790 = getelementptr double, ptr %3789, i64 %3765
  %3791 = getelementptr <2 x double>, ptr %3785, i64 %3774
  br label %3819

3792:                                             ; preds = %3865
  %3793 = getelementptr inbounds nuw double, ptr %3675, i64 %3765
  %3794 = load double, ptr %3793, align 8, !tbaa !42
  %3795 = fcmp ogt double %3794, 0.000000e+00
  %3796 = fcmp ogt double %3876, 0.000000e+00
  %3797 = select i1 %3795, i1 %3796, i1 false
  br i1 %3797, label %3798, label %3897

3798:                                             ; preds = %3792
  %3799 = getelementptr inbounds nuw double, ptr %3740, i64 %3765
  %3800 = getelementptr inbounds nuw double, ptr %3741, i64 %3765
  %3801 = sub i64 %3768, %3769
  %3802 = add i64 %3769, 1
  %3803 = and i64 %3801, 1
  %3804 = icmp eq i64 %3803, 0
  br i1 %3804, label %3814, label %3805

3805:                                             ; preds = %3798
  %3806 = load double, ptr %3799, align 8, !tbaa !42
  %3807 = load double, ptr %3800, align 8, !tbaa !42
  %3808 = fmul double %3876, %3807
  %3809 = fdiv double %3806, %3808
  %3810 = getelementptr <2 x double>, ptr %3790, i64 %3769
  %3811 = load double, ptr %3810, align 8, !tbaa !42
  %3812 = fmul double %3811, %3809
  store double %3812, ptr %3810, align 8, !tbaa !42
  %3813 = add nsw i64 %3769, 1
  br label %3814

3814:                                             ; preds = %3805, %3798
  %3815 = phi i64 [ %3769, %3798 ], [ %3813, %3805 ]
  %3816 = icmp eq i64 %3768, %3802
  br i1 %3816, label %3897, label %3817

3817:                                             ; preds = %3814
  %3818 = getelementptr i8, ptr %3790, i64 16
  br label %3879

3819:                                             ; preds = %3865, %3776
  %3820 = phi double [ 0.000000e+00, %3776 ], [ %3876, %3865 ]
  %3821 = phi i64 [ %3774, %3776 ], [ %3877, %3865 ]
  %3822 = icmp eq i64 %3821, %3774
  br i1 %3822, label %3823, label %3826

3823:                                             ; preds = %3819
  %3824 = load double, ptr %3791, align 8, !tbaa !42
  %3825 = tail call noundef double @llvm.fmuladd.f64(double %3824, double %3784, double %3771)
  br label %3837

3826:                                             ; preds = %3819
  %3827 = getelementptr <2 x double>, ptr %3783, i64 %3821
  %3828 = load double, ptr %3827, align 8, !tbaa !42
  %3829 = tail call noundef double @llvm.fmuladd.f64(double %3828, double %3784, double %3771)
  %3830 = getelementptr <2 x double>, ptr %3785, i64 %3821
  %3831 = load double, ptr %3830, align 8, !tbaa !42
  %3832 = tail call noundef double @llvm.fmuladd.f64(double %3831, double %3784, double %3771)
  %3833 = tail call noundef double @llvm.fmuladd.f64(double %3828, double %3786, double %3771)
  %3834 = fcmp ult double %3833, %3829
  br i1 %3834, label %3835, label %3837

3835:                                             ; preds = %3826
  %3836 = add nsw i64 %3821, 1
  br label %3837

3837:                                             ; preds = %3835, %3826, %3823
  %3838 = phi double [ %3832, %3835 ], [ %3832, %3826 ], [ %3825, %3823 ]
  %3839 = phi double [ %3829, %3835 ], [ %3829, %3826 ], [ %3773, %3823 ]
  %3840 = phi i64 [ %3836, %3835 ], [ %3821, %3826 ], [ %3774, %3823 ]
  %3841 = icmp sgt i64 %3840, %3769
  br i1 %3841, label %3842, label %3865

3842:                                             ; preds = %3837
  %3843 = load ptr, ptr %3685, align 8
  %3844 = getelementptr double, ptr %3843, i64 %3765
  br label %3845

3845:                                             ; preds = %3860, %3842
  %3846 = phi i64 [ %3840, %3842 ], [ %3863, %3860 ]
  %3847 = phi double [ 0.000000e+00, %3842 ], [ %3862, %3860 ]
  %3848 = phi double [ %3839, %3842 ], [ %3861, %3860 ]
  %3849 = getelementptr <2 x double>, ptr %3785, i64 %3846
  %3850 = load double, ptr %3849, align 8, !tbaa !42
  %3851 = tail call noundef double @llvm.fmuladd.f64(double %3850, double %3786, double %3771)
  %3852 = fcmp ogt double %3851, %3838
  br i1 %3852, label %3853, label %3865

3853:                                             ; preds = %3845
  %3854 = fcmp ogt double %3848, %3851
  br i1 %3854, label %3855, label %3860

3855:                                             ; preds = %3853
  %3856 = getelementptr <2 x double>, ptr %3844, i64 %3846
  %3857 = load double, ptr %3856, align 8, !tbaa !42
  %3858 = fsub double %3848, %3851
  %3859 = tail call double @llvm.fmuladd.f64(double %3857, double %3858, double %3847)
  br label %3860

3860:                                             ; preds = %3855, %3853
  %3861 = phi double [ %3851, %3855 ], [ %3848, %3853 ]
  %3862 = phi double [ %3859, %3855 ], [ %3847, %3853 ]
  %3863 = add nsw i64 %3846, -1
  %3864 = icmp sgt i64 %3863, %3769
  br i1 %3864, label %3845, label %3865, !llvm.loop !120

3865:                                             ; preds = %3860, %3845, %3837
  %3866 = phi double [ %3839, %3837 ], [ %3848, %3845 ], [ %3861, %3860 ]
  %3867 = phi double [ 0.000000e+00, %3837 ], [ %3847, %3845 ], [ %3862, %3860 ]
  %3868 = phi i64 [ %3840, %3837 ], [ %3846, %3845 ], [ %3769, %3860 ]
  %3869 = getelementptr <2 x double>, ptr %3788, i64 %3868
  %3870 = load double, ptr %3869, align 8, !tbaa !42
  %3871 = fsub double %3866, %3838
  %3872 = tail call double @llvm.fmuladd.f64(double %3870, double %3871, double %3867)
  %3873 = fsub double %3839, %3838
  %3874 = fdiv double %3872, %3873
  %3875 = getelementptr <2 x double>, ptr %3790, i64 %3821
  store double %3874, ptr %3875, align 8, !tbaa !42
  %3876 = fadd double %3820, %3872
  %3877 = add nsw i64 %3821, -1
  %3878 = icmp sgt i64 %3821, %3769
  br i1 %3878, label %3819, label %3792, !llvm.loop !121

3879:                                             ; preds = %3879, %3817
  %3880 = phi i64 [ %3815, %3817 ], [ %3895, %3879 ]
  %3881 = load double, ptr %3799, align 8, !tbaa !42
  %3882 = load double, ptr %3800, align 8, !tbaa !42
  %3883 = fmul double %3876, %3882
  %3884 = fdiv double %3881, %3883
  %3885 = getelementptr <2 x double>, ptr %3790, i64 %3880
  %3886 = load double, ptr %3885, align 8, !tbaa !42
  %3887 = fmul double %3886, %3884
  store double %3887, ptr %3885, align 8, !tbaa !42
  %3888 = load double, ptr %3799, align 8, !tbaa !42
  %3889 = load double, ptr %3800, align 8, !tbaa !42
  %3890 = fmul double %3876, %3889
  %3891 = fdiv double %3888, %3890
  %3892 = getelementptr <2 x double>, ptr %3818, i64 %3880
  %3893 = load double, ptr %3892, align 8, !tbaa !42
  %3894 = fmul double %3893, %3891
  store double %3894, ptr %3892, align 8, !tbaa !42
  %3895 = add nsw i64 %3880, 2
  %3896 = icmp eq i64 %3895, %3768
  br i1 %3896, label %3897, label %3879, !llvm.loop !122

3897:                                             ; preds = %3814, %3879, %3792, %3767, %3762
  br i1 %3763, label %3762, label %3898, !llvm.loop !123

3898:                                             ; preds = %3897, %3721
  %3899 = load i64, ptr %132, align 16, !tbaa !21
  br label %3900

3900:                                             ; preds = %3633, %3898
  %3901 = phi i64 [ %3642, %3633 ], [ %3899, %3898 ]
  %3902 = icmp sgt i64 %3901, 0
  br i1 %3902, label %3903, label %3907

3903:                                             ; preds = %3900
  %3904 = getelementptr inbounds nuw i8, ptr %3636, i64 1912
  %3905 = getelementptr inbounds nuw i8, ptr %3636, i64 1904
  %3906 = getelementptr inbounds nuw i8, ptr %3636, i64 1896
  br label %3917

3907:                                             ; preds = %3917, %3900
  %3908 = load i64, ptr %133, align 8, !tbaa !22
  %3909 = icmp sgt i64 %3908, 0
  br i1 %3909, label %3910, label %3936

3910:                                             ; preds = %3907
  %3911 = getelementptr inbounds nuw i8, ptr %3636, i64 2080
  %3912 = getelementptr inbounds nuw i8, ptr %3636, i64 2072
  %3913 = getelementptr inbounds nuw i8, ptr %3636, i64 2064
  %3914 = getelementptr inbounds nuw i8, ptr %3636, i64 2032
  %3915 = getelementptr inbounds nuw i8, ptr %3636, i64 2024
  %3916 = getelementptr inbounds nuw i8, ptr %3636, i64 2016
  br label %3940

3917:                                             ; preds = %3903, %3917
  %3918 = phi i64 [ 0, %3903 ], [ %3933, %3917 ]
  %3919 = load ptr, ptr %3904, align 8, !tbaa !56
  %3920 = getelementptr inbounds nuw <2 x double>, ptr %3919, i64 %3918
  %3921 = load ptr, ptr %3905, align 16, !tbaa !46
  %3922 = getelementptr inbounds nuw <2 x double>, ptr %3921, i64 %3918
  %3923 = load <2 x double>, ptr %3922, align 16, !tbaa !26
  %3924 = load <2 x double>, ptr %3920, align 16, !tbaa !26
  %3925 = select <2 x i1> %3604, <2 x double> %3924, <2 x double> %3923
  store <2 x double> %3925, ptr %3920, align 16, !tbaa !26
  %3926 = load ptr, ptr %3905, align 16, !tbaa !46
  %3927 = getelementptr inbounds nuw <2 x double>, ptr %3926, i64 %3918
  %3928 = load ptr, ptr %3906, align 8, !tbaa !57
  %3929 = getelementptr inbounds nuw <2 x double>, ptr %3928, i64 %3918
  %3930 = load <2 x double>, ptr %3929, align 16, !tbaa !26
  %3931 = load <2 x double>, ptr %3927, align 16, !tbaa !26
  %3932 = select <2 x i1> %3604, <2 x double> %3931, <2 x double> %3930
  store <2 x double> %3932, ptr %3927, align 16, !tbaa !26
  %3933 = add nuw nsw i64 %3918, 1
  %3934 = load i64, ptr %132, align 16, !tbaa !21
  %3935 = icmp slt i64 %3933, %3934
  br i1 %3935, label %3917, label %3907, !llvm.loop !124

3936:                                             ; preds = %3940, %3907
  %3937 = getelementptr inbounds nuw i8, ptr %3636, i64 1120
  %3938 = getelementptr inbounds nuw i8, ptr %3636, i64 928
  %3939 = getelementptr inbounds nuw i8, ptr %3636, i64 736
  br label %3988

3940:                                             ; preds = %3910, %3940
  %3941 = phi i64 [ 0, %3910 ], [ %3970, %3940 ]
  %3942 = load ptr, ptr %3911, align 16, !tbaa !59
  %3943 = getelementptr inbounds nuw <2 x double>, ptr %3942, i64 %3941
  %3944 = load ptr, ptr %3912, align 8, !tbaa !49
  %3945 = getelementptr inbounds nuw <2 x double>, ptr %3944, i64 %3941
  %3946 = load <2 x double>, ptr %3945, align 16, !tbaa !26
  %3947 = load <2 x double>, ptr %3943, align 16, !tbaa !26
  %3948 = select <2 x i1> %3604, <2 x double> %3947, <2 x double> %3946
  store <2 x double> %3948, ptr %3943, align 16, !tbaa !26
  %3949 = load ptr, ptr %3912, align 8, !tbaa !49
  %3950 = getelementptr inbounds nuw <2 x double>, ptr %3949, i64 %3941
  %3951 = load ptr, ptr %3913, align 16, !tbaa !75
  %3952 = getelementptr inbounds nuw <2 x double>, ptr %3951, i64 %3941
  %3953 = load <2 x double>, ptr %3952, align 16, !tbaa !26
  %3954 = load <2 x double>, ptr %3950, align 16, !tbaa !26
  %3955 = select <2 x i1> %3604, <2 x double> %3954, <2 x double> %3953
  store <2 x double> %3955, ptr %3950, align 16, !tbaa !26
  %3956 = load ptr, ptr %3914, align 16, !tbaa !61
  %3957 = getelementptr inbounds nuw <2 x double>, ptr %3956, i64 %3941
  %3958 = load ptr, ptr %3915, align 8, !tbaa !50
  %3959 = getelementptr inbounds nuw <2 x double>, ptr %3958, i64 %3941
  %3960 = load <2 x double>, ptr %3959, align 16, !tbaa !26
  %3961 = load <2 x double>, ptr %3957, align 16, !tbaa !26
  %3962 = select <2 x i1> %3604, <2 x double> %3961, <2 x double> %3960
  store <2 x double> %3962, ptr %3957, align 16, !tbaa !26
  %3963 = load ptr, ptr %3915, align 8, !tbaa !50
  %3964 = getelementptr inbounds nuw <2 x double>, ptr %3963, i64 %3941
  %3965 = load ptr, ptr %3916, align 16, !tbaa !106
  %3966 = getelementptr inbounds nuw <2 x double>, ptr %3965, i64 %3941
  %3967 = load <2 x double>, ptr %3966, align 16, !tbaa !26
  %3968 = load <2 x double>, ptr %3964, align 16, !tbaa !26
  %3969 = select <2 x i1> %3604, <2 x double> %3968, <2 x double> %3967
  store <2 x double> %3969, ptr %3964, align 16, !tbaa !26
  %3970 = add nuw nsw i64 %3941, 1
  %3971 = load i64, ptr %133, align 8, !tbaa !22
  %3972 = icmp slt i64 %3970, %3971
  br i1 %3972, label %3940, label %3936, !llvm.loop !125

3973:                                             ; preds = %3988
  %3974 = getelementptr inbounds nuw i8, ptr %3636, i64 1856
  %3975 = getelementptr inbounds nuw i8, ptr %3636, i64 1424
  %3976 = load <2 x double>, ptr %3975, align 16, !tbaa !26
  %3977 = fcmp ogt <2 x double> %3976, zeroinitializer
  %3978 = load <2 x double>, ptr %151, align 16, !tbaa !26
  %3979 = fcmp une <2 x double> %3978, splat (double 2.000000e+00)
  %3980 = and <2 x i1> %3977, %3979
  %3981 = select <2 x i1> %3980, <2 x i64> %3544, <2 x i64> zeroinitializer
  %3982 = load <2 x i64>, ptr %3974, align 16, !tbaa !26
  %3983 = and <2 x i64> %3982, %3632
  %3984 = or disjoint <2 x i64> %3981, %3983
  store <2 x i64> %3984, ptr %3974, align 16, !tbaa !26
  %3985 = add nuw nsw i64 %3634, 1
  %3986 = load i64, ptr %157, align 8, !tbaa !20
  %3987 = icmp slt i64 %3985, %3986
  br i1 %3987, label %3633, label %4009, !llvm.loop !126

3988:                                             ; preds = %3988, %3936
  %3989 = phi i64 [ 0, %3936 ], [ %4007, %3988 ]
  %3990 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3937, i64 0, i64 %3989
  %3991 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3938, i64 0, i64 %3989
  %3992 = load <2 x double>, ptr %3991, align 16, !tbaa !26
  %3993 = load <2 x double>, ptr %3990, align 16, !tbaa !26
  %3994 = select <2 x i1> %3604, <2 x double> %3993, <2 x double> %3992
  store <2 x double> %3994, ptr %3990, align 16, !tbaa !26
  %3995 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3939, i64 0, i64 %3989
  %3996 = load <2 x double>, ptr %3995, align 16, !tbaa !26
  %3997 = select <2 x i1> %3604, <2 x double> %3992, <2 x double> %3996
  store <2 x double> %3997, ptr %3991, align 16, !tbaa !26
  %3998 = or disjoint i64 %3989, 1
  %3999 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3937, i64 0, i64 %3998
  %4000 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3938, i64 0, i64 %3998
  %4001 = load <2 x double>, ptr %4000, align 16, !tbaa !26
  %4002 = load <2 x double>, ptr %3999, align 16, !tbaa !26
  %4003 = select <2 x i1> %3604, <2 x double> %4002, <2 x double> %4001
  store <2 x double> %4003, ptr %3999, align 16, !tbaa !26
  %4004 = getelementptr inbounds nuw [12 x <2 x double>], ptr %3939, i64 0, i64 %3998
  %4005 = load <2 x double>, ptr %4004, align 16, !tbaa !26
  %4006 = select <2 x i1> %3604, <2 x double> %4001, <2 x double> %4005
  store <2 x double> %4006, ptr %4000, align 16, !tbaa !26
  %4007 = add nuw nsw i64 %3989, 2
  %4008 = icmp eq i64 %4007, 12
  br i1 %4008, label %3973, label %3988, !llvm.loop !127

4009:                                             ; preds = %3973
  %4010 = load <2 x double>, ptr %159, align 16, !tbaa !26
  %4011 = load <2 x double>, ptr %179, align 16, !tbaa !26
  %4012 = load <2 x double>, ptr %216, align 16, !tbaa !26
  %4013 = load <2 x double>, ptr %156, align 16, !tbaa !26
  %4014 = load <2 x double>, ptr %214, align 16, !tbaa !26
  %4015 = fdiv <2 x double> %4012, %3248
  %4016 = icmp sgt i64 %3986, 0
  br label %4017

4017:                                             ; preds = %3603, %4009
  %4018 = phi <2 x double> [ %4015, %4009 ], [ %3258, %3603 ]
  %4019 = phi i1 [ %4016, %4009 ], [ false, %3603 ]
  %4020 = phi <2 x double> [ %4014, %4009 ], [ %3237, %3603 ]
  %4021 = phi <2 x double> [ %4013, %4009 ], [ %3532, %3603 ]
  %4022 = phi <2 x double> [ %4011, %4009 ], [ %3254, %3603 ]
  %4023 = phi <2 x double> [ %4010, %4009 ], [ %3252, %3603 ]
  %4024 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4025 = fadd <2 x double> %4024, %4023
  %4026 = select <2 x i1> %3604, <2 x double> %4024, <2 x double> %4025
  store <2 x double> %4026, ptr %149, align 16, !tbaa !26
  %4027 = load <2 x double>, ptr %158, align 16, !tbaa !26
  %4028 = select <2 x i1> %3604, <2 x double> %4027, <2 x double> %4023
  store <2 x double> %4028, ptr %158, align 16, !tbaa !26
  %4029 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4030 = fadd <2 x double> %4029, splat (double 1.000000e+00)
  %4031 = select <2 x i1> %3604, <2 x double> %4029, <2 x double> %4030
  store <2 x double> %4031, ptr %136, align 16, !tbaa !26
  %4032 = load <2 x double>, ptr %138, align 16, !tbaa !26
  %4033 = fcmp olt <2 x double> %4032, %4023
  %4034 = select <2 x i1> %3604, <2 x i1> splat (i1 true), <2 x i1> %4033
  %4035 = select <2 x i1> %4034, <2 x double> %4032, <2 x double> %4023
  store <2 x double> %4035, ptr %138, align 16, !tbaa !26
  %4036 = fcmp une <2 x double> %4022, zeroinitializer
  %4037 = fcmp ueq <2 x double> %3247, zeroinitializer
  %4038 = or <2 x i1> %4037, %4036
  %4039 = fcmp olt <2 x double> %4018, splat (double 1.800000e+00)
  %4040 = select <2 x i1> %4039, <2 x double> %4018, <2 x double> splat (double 1.800000e+00)
  %4041 = select <2 x i1> %4038, <2 x double> splat (double 1.800000e+00), <2 x double> %4040
  %4042 = fcmp ogt <2 x double> %4041, splat (double 2.000000e-01)
  %4043 = select <2 x i1> %4042, <2 x double> %4041, <2 x double> splat (double 2.000000e-01)
  %4044 = fmul <2 x double> %4023, %4043
  %4045 = fmul <2 x double> %4023, splat (double 4.000000e+00)
  %4046 = fcmp olt <2 x double> %4021, %4045
  %4047 = select <2 x i1> %4046, <2 x double> %4021, <2 x double> %4045
  %4048 = fcmp ogt <2 x double> %4044, %4047
  %4049 = select <2 x i1> %4048, <2 x double> %4044, <2 x double> %4047
  %4050 = select <2 x i1> %3604, <2 x double> %4021, <2 x double> zeroinitializer
  store <2 x double> %4050, ptr %156, align 16, !tbaa !26
  %4051 = select <2 x i1> %3604, <2 x double> %4020, <2 x double> zeroinitializer
  store <2 x double> %4051, ptr %214, align 16, !tbaa !26
  %4052 = load <2 x i64>, ptr %160, align 16, !tbaa !26
  %4053 = and <2 x i64> %4052, %3632
  store <2 x i64> %4053, ptr %160, align 16, !tbaa !26
  br i1 %4019, label %4054, label %4351

4054:                                             ; preds = %4017, %4344
  %4055 = phi i64 [ %4346, %4344 ], [ 0, %4017 ]
  %4056 = phi <2 x double> [ %4345, %4344 ], [ %4049, %4017 ]
  %4057 = load ptr, ptr %142, align 8, !tbaa !28
  %4058 = getelementptr inbounds nuw %struct.Piece, ptr %4057, i64 %4055
  %4059 = getelementptr inbounds nuw i8, ptr %4058, i64 944
  %4060 = load <2 x double>, ptr %4059, align 16, !tbaa !26
  %4061 = getelementptr inbounds nuw i8, ptr %4058, i64 368
  %4062 = load <2 x double>, ptr %4061, align 16, !tbaa !26
  %4063 = fmul <2 x double> %4062, splat (double 1.001000e+00)
  %4064 = fcmp ole <2 x double> %4060, %4063
  %4065 = getelementptr inbounds nuw i8, ptr %4058, i64 400
  %4066 = load <2 x double>, ptr %4065, align 16, !tbaa !26
  %4067 = getelementptr inbounds nuw i8, ptr %4058, i64 1008
  %4068 = load <2 x double>, ptr %4067, align 16, !tbaa !26
  %4069 = fsub <2 x double> %4066, %4068
  %4070 = fmul <2 x double> %4066, splat (double 1.000000e-04)
  %4071 = fcmp ole <2 x double> %4069, %4070
  %4072 = getelementptr inbounds nuw i8, ptr %4058, i64 1840
  %4073 = load <2 x i64>, ptr %4072, align 16, !tbaa !26
  %4074 = and <2 x i64> %4073, %3544
  %4075 = getelementptr inbounds nuw i8, ptr %4058, i64 1824
  %4076 = load <2 x double>, ptr %4075, align 16, !tbaa !26
  %4077 = fcmp oeq <2 x double> %4076, zeroinitializer
  %4078 = and <2 x i1> %4064, %4077
  %4079 = fcmp oeq <2 x double> %4076, splat (double 1.000000e+00)
  %4080 = and <2 x i1> %4071, %4079
  %4081 = or <2 x i1> %4078, %4080
  %4082 = select <2 x i1> %4081, <2 x i64> %4074, <2 x i64> zeroinitializer
  %4083 = fadd <2 x double> %4076, splat (double 1.000000e+00)
  %4084 = icmp eq <2 x i64> %4082, zeroinitializer
  %4085 = select <2 x i1> %4084, <2 x double> %4076, <2 x double> %4083
  store <2 x double> %4085, ptr %4075, align 16, !tbaa !26
  %4086 = getelementptr inbounds nuw i8, ptr %4058, i64 1856
  %4087 = load <2 x i64>, ptr %4086, align 16, !tbaa !26
  %4088 = or <2 x i64> %4082, %4087
  store <2 x i64> %4088, ptr %4086, align 16, !tbaa !26
  %4089 = getelementptr inbounds nuw i8, ptr %4058, i64 224
  %4090 = load <2 x double>, ptr %4089, align 16, !tbaa !26
  %4091 = getelementptr inbounds nuw i8, ptr %4058, i64 1408
  %4092 = load <2 x double>, ptr %4091, align 16, !tbaa !26
  %4093 = getelementptr inbounds nuw i8, ptr %4058, i64 1424
  %4094 = load <2 x double>, ptr %4093, align 16, !tbaa !26
  %4095 = fadd <2 x double> %4092, %4094
  %4096 = fcmp ogt <2 x double> %4095, zeroinitializer
  %4097 = xor <2 x i64> %4073, splat (i64 -1)
  %4098 = and <2 x i64> %3544, %4097
  %4099 = fcmp une <2 x double> %4090, zeroinitializer
  %4100 = or <2 x i1> %4099, %4096
  %4101 = getelementptr inbounds nuw i8, ptr %4058, i64 960
  %4102 = load <2 x double>, ptr %4101, align 16, !tbaa !26
  %4103 = fmul <2 x double> %4090, splat (double 1.000000e-04)
  %4104 = fcmp ogt <2 x double> %4103, splat (double 0x3E7AD7F29ABCAF48)
  %4105 = select <2 x i1> %4104, <2 x double> %4103, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4106 = fcmp ole <2 x double> %4102, %4105
  %4107 = select <2 x i1> %4106, <2 x i1> %4100, <2 x i1> zeroinitializer
  %4108 = select <2 x i1> %4107, <2 x i64> %4098, <2 x i64> zeroinitializer
  %4109 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4108)
  %4110 = icmp eq i64 %4109, 0
  br i1 %4110, label %4344, label %4111

4111:                                             ; preds = %4054
  %4112 = load i64, ptr %132, align 16, !tbaa !21
  %4113 = load i64, ptr %133, align 8, !tbaa !22
  %4114 = getelementptr inbounds nuw i8, ptr %4058, i64 1104
  %4115 = load <2 x double>, ptr %4114, align 16, !tbaa !26
  %4116 = getelementptr inbounds nuw i8, ptr %4058, i64 1392
  %4117 = load <2 x double>, ptr %4116, align 16, !tbaa !26
  %4118 = getelementptr inbounds nuw i8, ptr %4058, i64 208
  %4119 = load <2 x double>, ptr %4118, align 16, !tbaa !26
  %4120 = getelementptr inbounds nuw i8, ptr %4058, i64 1936
  %4121 = load ptr, ptr %4120, align 16, !tbaa !47
  %4122 = add nsw i64 %4112, -1
  %4123 = getelementptr inbounds <2 x double>, ptr %4121, i64 %4122
  %4124 = load <2 x double>, ptr %4123, align 16, !tbaa !26
  %4125 = fmul <2 x double> %4119, %4124
  %4126 = fneg <2 x double> %4102
  %4127 = fdiv <2 x double> %4126, %4125
  %4128 = fcmp ogt <2 x double> %4127, splat (double 0x3E7AD7F29ABCAF48)
  %4129 = select <2 x i1> %4128, <2 x double> %4127, <2 x double> splat (double 0x3E7AD7F29ABCAF48)
  %4130 = load <2 x double>, ptr %4058, align 16, !tbaa !26
  %4131 = fsub <2 x double> %4130, %4129
  %4132 = getelementptr inbounds nuw i8, ptr %4058, i64 640
  %4133 = load <2 x double>, ptr %4132, align 16, !tbaa !26
  %4134 = getelementptr inbounds nuw i8, ptr %4058, i64 656
  %4135 = load <2 x double>, ptr %4134, align 16, !tbaa !26
  %4136 = getelementptr inbounds nuw i8, ptr %4058, i64 672
  %4137 = load <2 x double>, ptr %4136, align 16, !tbaa !26
  %4138 = getelementptr inbounds nuw i8, ptr %4058, i64 688
  %4139 = load <2 x double>, ptr %4138, align 16, !tbaa !26
  %4140 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4131, <2 x double> %4139, <2 x double> %4137)
  %4141 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4131, <2 x double> %4140, <2 x double> %4135)
  %4142 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4131, <2 x double> %4141, <2 x double> %4133)
  %4143 = getelementptr inbounds nuw i8, ptr %4058, i64 1904
  %4144 = load ptr, ptr %4143, align 16, !tbaa !46
  %4145 = getelementptr inbounds <2 x double>, ptr %4144, i64 %4122
  %4146 = load <2 x double>, ptr %4145, align 16, !tbaa !26
  %4147 = getelementptr inbounds nuw i8, ptr %4058, i64 1888
  %4148 = load i64, ptr %4147, align 16, !tbaa !31
  %4149 = icmp sgt i64 %4112, %4148
  br i1 %4149, label %4153, label %4150

4150:                                             ; preds = %4111
  %4151 = getelementptr inbounds nuw i8, ptr %4058, i64 160
  %4152 = load <2 x double>, ptr %4151, align 16, !tbaa !26
  br label %4164

4153:                                             ; preds = %4111
  %4154 = getelementptr inbounds nuw i8, ptr %4058, i64 96
  %4155 = load <2 x double>, ptr %4154, align 16, !tbaa !26
  %4156 = getelementptr inbounds nuw i8, ptr %4058, i64 112
  %4157 = load <2 x double>, ptr %4156, align 16, !tbaa !26
  %4158 = getelementptr inbounds nuw i8, ptr %4058, i64 128
  %4159 = load <2 x double>, ptr %4158, align 16, !tbaa !26
  %4160 = fmul <2 x double> %4146, %4159
  %4161 = fmul <2 x double> %4160, splat (double 0x3FD5555555555555)
  %4162 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4157, <2 x double> splat (double 5.000000e-01), <2 x double> %4161)
  %4163 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4146, <2 x double> %4162, <2 x double> %4155)
  br label %4164

4164:                                             ; preds = %4153, %4150
  %4165 = phi <2 x double> [ %4152, %4150 ], [ %4163, %4153 ]
  %4166 = fmul <2 x double> %4146, %4165
  %4167 = icmp sgt i64 %4112, 0
  br i1 %4167, label %4168, label %4178

4168:                                             ; preds = %4164
  %4169 = getelementptr inbounds nuw i8, ptr %4058, i64 160
  %4170 = getelementptr inbounds nuw i8, ptr %4058, i64 96
  %4171 = getelementptr inbounds nuw i8, ptr %4058, i64 112
  %4172 = getelementptr inbounds nuw i8, ptr %4058, i64 128
  %4173 = getelementptr inbounds nuw i8, ptr %4058, i64 384
  %4174 = getelementptr inbounds nuw i8, ptr %4058, i64 1984
  %4175 = icmp eq <2 x i64> %4108, zeroinitializer
  br label %4190

4176:                                             ; preds = %4269
  %4177 = load <2 x double>, ptr %4058, align 16, !tbaa !26
  br label %4178

4178:                                             ; preds = %4176, %4164
  %4179 = phi <2 x double> [ %4177, %4176 ], [ %4130, %4164 ]
  %4180 = fsub <2 x double> %4179, %4131
  %4181 = sitofp i64 %4113 to double
  %4182 = insertelement <2 x double> poison, double %4181, i64 0
  %4183 = shufflevector <2 x double> %4182, <2 x double> poison, <2 x i32> zeroinitializer
  %4184 = fdiv <2 x double> %4180, %4183
  %4185 = icmp sgt i64 %4113, 0
  br i1 %4185, label %4186, label %4300

4186:                                             ; preds = %4178
  %4187 = getelementptr inbounds nuw i8, ptr %4058, i64 2072
  %4188 = icmp eq <2 x i64> %4108, zeroinitializer
  %4189 = getelementptr inbounds nuw i8, ptr %4058, i64 2024
  br label %4277

4190:                                             ; preds = %4168, %4269
  %4191 = phi <2 x double> [ %4146, %4168 ], [ %4239, %4269 ]
  %4192 = phi <2 x double> [ %4166, %4168 ], [ %4240, %4269 ]
  %4193 = phi <2 x double> [ %4142, %4168 ], [ %4238, %4269 ]
  %4194 = phi i64 [ %4122, %4168 ], [ %4275, %4269 ]
  %4195 = icmp eq i64 %4194, 0
  br i1 %4195, label %4237, label %4196

4196:                                             ; preds = %4190
  %4197 = load ptr, ptr %4143, align 16, !tbaa !46
  %4198 = getelementptr <2 x double>, ptr %4197, i64 %4194
  %4199 = getelementptr i8, ptr %4198, i64 -16
  %4200 = load <2 x double>, ptr %4199, align 16, !tbaa !26
  %4201 = load i64, ptr %4147, align 16, !tbaa !31
  %4202 = icmp sgt i64 %4194, %4201
  br i1 %4202, label %4205, label %4203

4203:                                             ; preds = %4196
  %4204 = load <2 x double>, ptr %4169, align 16, !tbaa !26
  br label %4213

4205:                                             ; preds = %4196
  %4206 = load <2 x double>, ptr %4170, align 16, !tbaa !26
  %4207 = load <2 x double>, ptr %4171, align 16, !tbaa !26
  %4208 = load <2 x double>, ptr %4172, align 16, !tbaa !26
  %4209 = fmul <2 x double> %4200, %4208
  %4210 = fmul <2 x double> %4209, splat (double 0x3FD5555555555555)
  %4211 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4207, <2 x double> splat (double 5.000000e-01), <2 x double> %4210)
  %4212 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4200, <2 x double> %4211, <2 x double> %4206)
  br label %4213

4213:                                             ; preds = %4203, %4205
  %4214 = phi <2 x double> [ %4212, %4205 ], [ %4204, %4203 ]
  %4215 = fmul <2 x double> %4200, %4214
  %4216 = icmp slt i64 %4194, %4201
  br i1 %4216, label %4217, label %4224

4217:                                             ; preds = %4213
  %4218 = load ptr, ptr %4174, align 16, !tbaa !67
  %4219 = getelementptr inbounds nuw <2 x double>, ptr %4218, i64 %4194
  %4220 = load <2 x double>, ptr %4219, align 16, !tbaa !26
  %4221 = load <2 x double>, ptr %4173, align 16, !tbaa !26
  %4222 = fmul <2 x double> %4220, %4221
  %4223 = fmul <2 x double> %4220, %4221
  br label %4233

4224:                                             ; preds = %4213
  %4225 = load <2 x double>, ptr %4173, align 16, !tbaa !26
  %4226 = load ptr, ptr %4174, align 16, !tbaa !67
  %4227 = getelementptr inbounds nuw <2 x double>, ptr %4226, i64 %4194
  %4228 = load <2 x double>, ptr %4227, align 16, !tbaa !26
  %4229 = fsub <2 x double> %4142, %4225
  %4230 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4228, <2 x double> %4229, <2 x double> %4225)
  %4231 = fsub <2 x double> %4115, %4225
  %4232 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4228, <2 x double> %4231, <2 x double> %4225)
  br label %4233

4233:                                             ; preds = %4224, %4217
  %4234 = phi <2 x double> [ %4222, %4217 ], [ %4230, %4224 ]
  %4235 = phi <2 x double> [ %4223, %4217 ], [ %4232, %4224 ]
  %4236 = fsub <2 x double> %4235, %4234
  br label %4237

4237:                                             ; preds = %4190, %4233
  %4238 = phi <2 x double> [ %4234, %4233 ], [ zeroinitializer, %4190 ]
  %4239 = phi <2 x double> [ %4200, %4233 ], [ %4191, %4190 ]
  %4240 = phi <2 x double> [ %4215, %4233 ], [ %4192, %4190 ]
  %4241 = phi <2 x double> [ %4236, %4233 ], [ zeroinitializer, %4190 ]
  %4242 = fsub <2 x double> %4193, %4238
  %4243 = fdiv <2 x double> %4241, %4242
  %4244 = fsub <2 x double> %4240, %4192
  %4245 = fmul <2 x double> %4244, %4243
  %4246 = load ptr, ptr %4120, align 16, !tbaa !47
  %4247 = getelementptr inbounds nuw <2 x double>, ptr %4246, i64 %4194
  %4248 = load <2 x double>, ptr %4247, align 16, !tbaa !26
  br i1 %4195, label %4252, label %4249

4249:                                             ; preds = %4237
  %4250 = getelementptr i8, ptr %4247, i64 -16
  %4251 = load <2 x double>, ptr %4250, align 16, !tbaa !26
  br label %4252

4252:                                             ; preds = %4249, %4237
  %4253 = phi <2 x double> [ %4251, %4249 ], [ %4248, %4237 ]
  %4254 = fsub <2 x double> %4253, %4248
  %4255 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4254, <2 x double> %4243, <2 x double> %4248)
  %4256 = select <2 x i1> %4175, <2 x double> %4248, <2 x double> %4255
  store <2 x double> %4256, ptr %4247, align 16, !tbaa !26
  %4257 = load ptr, ptr %4143, align 16, !tbaa !46
  %4258 = getelementptr inbounds nuw <2 x double>, ptr %4257, i64 %4194
  %4259 = load i64, ptr %4147, align 16, !tbaa !31
  %4260 = icmp slt i64 %4194, %4259
  br i1 %4260, label %4261, label %4263

4261:                                             ; preds = %4252
  %4262 = load <2 x double>, ptr %4169, align 16, !tbaa !26
  br label %4269

4263:                                             ; preds = %4252
  %4264 = load <2 x double>, ptr %4170, align 16, !tbaa !26
  %4265 = load <2 x double>, ptr %4171, align 16, !tbaa !26
  %4266 = load <2 x double>, ptr %4172, align 16, !tbaa !26
  %4267 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4191, <2 x double> %4266, <2 x double> %4265)
  %4268 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4191, <2 x double> %4267, <2 x double> %4264)
  br label %4269

4269:                                             ; preds = %4263, %4261
  %4270 = phi <2 x double> [ %4262, %4261 ], [ %4268, %4263 ]
  %4271 = fdiv <2 x double> %4245, %4270
  %4272 = fadd <2 x double> %4191, %4271
  %4273 = load <2 x double>, ptr %4258, align 16, !tbaa !26
  %4274 = select <2 x i1> %4175, <2 x double> %4273, <2 x double> %4272
  store <2 x double> %4274, ptr %4258, align 16, !tbaa !26
  %4275 = add nsw i64 %4194, -1
  %4276 = icmp sgt i64 %4194, 0
  br i1 %4276, label %4190, label %4176, !llvm.loop !128

4277:                                             ; preds = %4186, %4277
  %4278 = phi i64 [ 0, %4186 ], [ %4298, %4277 ]
  %4279 = load ptr, ptr %4187, align 8, !tbaa !49
  %4280 = getelementptr inbounds nuw <2 x double>, ptr %4279, i64 %4278
  %4281 = uitofp nneg i64 %4278 to double
  %4282 = insertelement <2 x double> poison, double %4281, i64 0
  %4283 = shufflevector <2 x double> %4282, <2 x double> poison, <2 x i32> zeroinitializer
  %4284 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4283, <2 x double> %4184, <2 x double> %4131)
  %4285 = load <2 x double>, ptr %4132, align 16, !tbaa !26
  %4286 = load <2 x double>, ptr %4134, align 16, !tbaa !26
  %4287 = load <2 x double>, ptr %4136, align 16, !tbaa !26
  %4288 = load <2 x double>, ptr %4138, align 16, !tbaa !26
  %4289 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4284, <2 x double> %4288, <2 x double> %4287)
  %4290 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4284, <2 x double> %4289, <2 x double> %4286)
  %4291 = tail call noundef <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4284, <2 x double> %4290, <2 x double> %4285)
  %4292 = load <2 x double>, ptr %4280, align 16, !tbaa !26
  %4293 = select <2 x i1> %4188, <2 x double> %4292, <2 x double> %4291
  store <2 x double> %4293, ptr %4280, align 16, !tbaa !26
  %4294 = load ptr, ptr %4189, align 8, !tbaa !50
  %4295 = getelementptr inbounds nuw <2 x double>, ptr %4294, i64 %4278
  %4296 = load <2 x double>, ptr %4295, align 16, !tbaa !26
  %4297 = select <2 x i1> %4188, <2 x double> %4296, <2 x double> %4117
  store <2 x double> %4297, ptr %4295, align 16, !tbaa !26
  %4298 = add nuw nsw i64 %4278, 1
  %4299 = icmp eq i64 %4298, %4113
  br i1 %4299, label %4300, label %4277, !llvm.loop !129

4300:                                             ; preds = %4277, %4178
  %4301 = fsub <2 x double> %4115, %4142
  %4302 = getelementptr inbounds nuw i8, ptr %4058, i64 928
  %4303 = getelementptr inbounds nuw i8, ptr %4058, i64 2072
  %4304 = load ptr, ptr %4303, align 8, !tbaa !49
  %4305 = getelementptr inbounds <2 x double>, ptr %4304, i64 %4113
  %4306 = getelementptr inbounds nuw i8, ptr %4058, i64 352
  %4307 = load <2 x double>, ptr %4306, align 16, !tbaa !26
  %4308 = load <2 x double>, ptr %4305, align 16, !tbaa !26
  %4309 = icmp eq <2 x i64> %4108, zeroinitializer
  %4310 = select <2 x i1> %4309, <2 x double> %4308, <2 x double> %4307
  store <2 x double> %4310, ptr %4305, align 16, !tbaa !26
  %4311 = load <2 x double>, ptr %4302, align 16, !tbaa !26
  %4312 = select <2 x i1> %4309, <2 x double> %4311, <2 x double> %4131
  store <2 x double> %4312, ptr %4302, align 16, !tbaa !26
  %4313 = load <2 x double>, ptr %4059, align 16, !tbaa !26
  %4314 = select <2 x i1> %4309, <2 x double> %4313, <2 x double> %4142
  store <2 x double> %4314, ptr %4059, align 16, !tbaa !26
  %4315 = load <2 x double>, ptr %4114, align 16, !tbaa !26
  %4316 = select <2 x i1> %4309, <2 x double> %4315, <2 x double> %4142
  store <2 x double> %4316, ptr %4114, align 16, !tbaa !26
  %4317 = getelementptr inbounds nuw i8, ptr %4058, i64 976
  %4318 = load <2 x double>, ptr %4317, align 16, !tbaa !26
  %4319 = fneg <2 x double> %4301
  %4320 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4319, <2 x double> %4125, <2 x double> %4318)
  %4321 = select <2 x i1> %4309, <2 x double> %4318, <2 x double> %4320
  store <2 x double> %4321, ptr %4317, align 16, !tbaa !26
  %4322 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4301, <2 x double> %4125, <2 x double> %4102)
  %4323 = load <2 x double>, ptr %4101, align 16, !tbaa !26
  %4324 = select <2 x i1> %4309, <2 x double> %4323, <2 x double> %4322
  store <2 x double> %4324, ptr %4101, align 16, !tbaa !26
  %4325 = getelementptr inbounds nuw i8, ptr %4058, i64 1040
  %4326 = load <2 x double>, ptr %4325, align 16, !tbaa !26
  %4327 = getelementptr inbounds nuw i8, ptr %4058, i64 192
  %4328 = load <2 x double>, ptr %4327, align 16, !tbaa !26
  %4329 = fneg <2 x double> %4328
  %4330 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4329, <2 x double> %4117, <2 x double> %4166)
  %4331 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4301, <2 x double> %4330, <2 x double> %4326)
  %4332 = select <2 x i1> %4309, <2 x double> %4326, <2 x double> %4331
  store <2 x double> %4332, ptr %4325, align 16, !tbaa !26
  %4333 = load <2 x i64>, ptr %4072, align 16, !tbaa !26
  %4334 = or <2 x i64> %4333, %4108
  store <2 x i64> %4334, ptr %4072, align 16, !tbaa !26
  %4335 = load <2 x i64>, ptr %4086, align 16, !tbaa !26
  %4336 = or <2 x i64> %4335, %4108
  store <2 x i64> %4336, ptr %4086, align 16, !tbaa !26
  %4337 = load <2 x double>, ptr %221, align 16, !tbaa !26
  %4338 = fmul <2 x double> %4337, splat (double 5.000000e+00)
  %4339 = fcmp olt <2 x double> %4056, %4338
  %4340 = select <2 x i1> %4339, <2 x double> %4056, <2 x double> %4338
  %4341 = icmp ne <2 x i64> %4108, zeroinitializer
  %4342 = select <2 x i1> %4099, <2 x i1> %4341, <2 x i1> zeroinitializer
  %4343 = select <2 x i1> %4342, <2 x double> %4340, <2 x double> %4056
  br label %4344

4344:                                             ; preds = %4300, %4054
  %4345 = phi <2 x double> [ %4343, %4300 ], [ %4056, %4054 ]
  %4346 = add nuw nsw i64 %4055, 1
  %4347 = load i64, ptr %157, align 8, !tbaa !20
  %4348 = icmp slt i64 %4346, %4347
  br i1 %4348, label %4054, label %4349, !llvm.loop !130

4349:                                             ; preds = %4344
  %4350 = load <2 x double>, ptr %149, align 16, !tbaa !26
  br label %4351

4351:                                             ; preds = %4349, %4017
  %4352 = phi <2 x double> [ %4026, %4017 ], [ %4350, %4349 ]
  %4353 = phi <2 x double> [ %4049, %4017 ], [ %4345, %4349 ]
  %4354 = load <2 x double>, ptr %152, align 16, !tbaa !26
  %4355 = select <2 x i1> %3604, <2 x double> %4354, <2 x double> %4353
  store <2 x double> %4355, ptr %152, align 16, !tbaa !26
  %4356 = load ptr, ptr %222, align 16, !tbaa !38
  %4357 = getelementptr inbounds nuw i8, ptr %4356, i64 16
  store <2 x double> %4352, ptr %4356, align 16, !tbaa !26
  %4358 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %4359 = getelementptr inbounds nuw i8, ptr %4356, i64 32
  store <2 x double> %4358, ptr %4357, align 16, !tbaa !26
  %4360 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %4361 = getelementptr inbounds nuw i8, ptr %4356, i64 48
  store <2 x double> %4360, ptr %4359, align 16, !tbaa !26
  %4362 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %4363 = getelementptr inbounds nuw i8, ptr %4356, i64 64
  store <2 x double> %4362, ptr %4361, align 16, !tbaa !26
  %4364 = load i64, ptr %157, align 8, !tbaa !20
  %4365 = icmp sgt i64 %4364, 0
  br i1 %4365, label %4370, label %4366

4366:                                             ; preds = %4370, %4351
  %4367 = phi ptr [ %4363, %4351 ], [ %4376, %4370 ]
  %4368 = load i64, ptr %224, align 8, !tbaa !131
  %4369 = icmp eq i64 %4368, 0
  br i1 %4369, label %4505, label %4380

4370:                                             ; preds = %4351, %4370
  %4371 = phi ptr [ %4376, %4370 ], [ %4363, %4351 ]
  %4372 = phi i64 [ %4377, %4370 ], [ 0, %4351 ]
  %4373 = load ptr, ptr %142, align 8, !tbaa !28
  %4374 = getelementptr inbounds nuw %struct.Piece, ptr %4373, i64 %4372, i32 35
  %4375 = load <2 x double>, ptr %4374, align 16, !tbaa !26
  %4376 = getelementptr inbounds nuw i8, ptr %4371, i64 16
  store <2 x double> %4375, ptr %4371, align 16, !tbaa !26
  %4377 = add nuw nsw i64 %4372, 1
  %4378 = load i64, ptr %157, align 8, !tbaa !20
  %4379 = icmp slt i64 %4377, %4378
  br i1 %4379, label %4370, label %4366, !llvm.loop !132

4380:                                             ; preds = %4366
  %4381 = load <2 x double>, ptr %206, align 16, !tbaa !26
  %4382 = getelementptr inbounds nuw i8, ptr %4367, i64 16
  store <2 x double> %4381, ptr %4367, align 16, !tbaa !26
  %4383 = load <2 x double>, ptr %184, align 16, !tbaa !26
  %4384 = getelementptr inbounds nuw i8, ptr %4367, i64 32
  store <2 x double> %4383, ptr %4382, align 16, !tbaa !26
  %4385 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %4386 = load <2 x double>, ptr %201, align 16, !tbaa !26
  %4387 = fsub <2 x double> %4385, %4386
  %4388 = fcmp ogt <2 x double> %4387, zeroinitializer
  %4389 = select <2 x i1> %4388, <2 x double> %4387, <2 x double> zeroinitializer
  store <2 x double> %4389, ptr %4384, align 16, !tbaa !26
  %4390 = load i64, ptr %157, align 8, !tbaa !20
  %4391 = icmp sgt i64 %4390, 0
  br i1 %4391, label %4392, label %4505

4392:                                             ; preds = %4380
  %4393 = getelementptr inbounds nuw i8, ptr %4367, i64 48
  br label %4394

4394:                                             ; preds = %4392, %4394
  %4395 = phi ptr [ %4501, %4394 ], [ %4393, %4392 ]
  %4396 = phi i64 [ %4502, %4394 ], [ 0, %4392 ]
  %4397 = load ptr, ptr %142, align 8, !tbaa !28
  %4398 = getelementptr inbounds nuw %struct.Piece, ptr %4397, i64 %4396
  %4399 = getelementptr inbounds nuw i8, ptr %4398, i64 1904
  %4400 = load ptr, ptr %4399, align 16, !tbaa !46
  %4401 = load i64, ptr %132, align 16, !tbaa !21
  %4402 = getelementptr <2 x double>, ptr %4400, i64 %4401
  %4403 = getelementptr i8, ptr %4402, i64 -16
  %4404 = load <2 x double>, ptr %4403, align 16, !tbaa !26
  %4405 = getelementptr inbounds nuw i8, ptr %4398, i64 1712
  %4406 = load <2 x double>, ptr %4405, align 16, !tbaa !26
  %4407 = getelementptr inbounds nuw i8, ptr %4398, i64 1392
  %4408 = load <2 x double>, ptr %4407, align 16, !tbaa !26
  %4409 = fsub <2 x double> %4408, %4404
  %4410 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4406, <2 x double> %4409, <2 x double> %4404)
  %4411 = getelementptr inbounds nuw i8, ptr %4395, i64 16
  store <2 x double> %4410, ptr %4395, align 16, !tbaa !26
  %4412 = getelementptr inbounds nuw i8, ptr %4398, i64 1600
  %4413 = load <2 x double>, ptr %4412, align 16, !tbaa !26
  %4414 = getelementptr inbounds nuw i8, ptr %4395, i64 32
  store <2 x double> %4413, ptr %4411, align 16, !tbaa !26
  %4415 = load <2 x double>, ptr %4398, align 16, !tbaa !26
  %4416 = getelementptr inbounds nuw i8, ptr %4398, i64 928
  %4417 = load <2 x double>, ptr %4416, align 16, !tbaa !26
  %4418 = fsub <2 x double> %4415, %4417
  %4419 = getelementptr inbounds nuw i8, ptr %4395, i64 48
  store <2 x double> %4418, ptr %4414, align 16, !tbaa !26
  %4420 = getelementptr inbounds nuw i8, ptr %4398, i64 1008
  %4421 = load <2 x double>, ptr %4420, align 16, !tbaa !26
  %4422 = getelementptr inbounds nuw i8, ptr %4395, i64 64
  store <2 x double> %4421, ptr %4419, align 16, !tbaa !26
  %4423 = getelementptr inbounds nuw i8, ptr %4398, i64 992
  %4424 = load <2 x double>, ptr %4423, align 16, !tbaa !26
  %4425 = getelementptr inbounds nuw i8, ptr %4395, i64 80
  store <2 x double> %4424, ptr %4422, align 16, !tbaa !26
  %4426 = getelementptr inbounds nuw i8, ptr %4398, i64 960
  %4427 = load <2 x double>, ptr %4426, align 16, !tbaa !26
  %4428 = getelementptr inbounds nuw i8, ptr %4395, i64 96
  store <2 x double> %4427, ptr %4425, align 16, !tbaa !26
  %4429 = getelementptr inbounds nuw i8, ptr %4398, i64 1024
  %4430 = load <2 x double>, ptr %4429, align 16, !tbaa !26
  %4431 = getelementptr inbounds nuw i8, ptr %4395, i64 112
  store <2 x double> %4430, ptr %4428, align 16, !tbaa !26
  %4432 = getelementptr inbounds nuw i8, ptr %4398, i64 2024
  %4433 = load i64, ptr %133, align 8, !tbaa !22
  %4434 = sitofp i64 %4433 to double
  %4435 = tail call double @llvm.fmuladd.f64(double %4434, double 7.500000e-01, double -5.000000e-01)
  %4436 = fcmp ogt double %4435, 0.000000e+00
  %4437 = select i1 %4436, double %4435, double 0.000000e+00
  %4438 = fptosi double %4437 to i64
  %4439 = add nsw i64 %4433, -2
  %4440 = tail call i64 @llvm.smin.i64(i64 %4439, i64 %4438)
  %4441 = sitofp i64 %4440 to double
  %4442 = fsub double %4435, %4441
  %4443 = fsub double 1.000000e+00, %4442
  %4444 = insertelement <2 x double> poison, double %4443, i64 0
  %4445 = shufflevector <2 x double> %4444, <2 x double> poison, <2 x i32> zeroinitializer
  %4446 = load ptr, ptr %4432, align 8, !tbaa !50
  %4447 = getelementptr inbounds <2 x double>, ptr %4446, i64 %4440
  %4448 = load <2 x double>, ptr %4447, align 16, !tbaa !26
  %4449 = insertelement <2 x double> poison, double %4442, i64 0
  %4450 = shufflevector <2 x double> %4449, <2 x double> poison, <2 x i32> zeroinitializer
  %4451 = getelementptr i8, ptr %4447, i64 16
  %4452 = load <2 x double>, ptr %4451, align 16, !tbaa !26
  %4453 = fmul <2 x double> %4452, %4450
  %4454 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4445, <2 x double> %4448, <2 x double> %4453)
  store <2 x double> %4454, ptr %4431, align 16, !tbaa !26
  %4455 = load i64, ptr %133, align 8, !tbaa !22
  %4456 = sitofp i64 %4455 to double
  %4457 = tail call double @llvm.fmuladd.f64(double %4456, double 5.000000e-01, double -5.000000e-01)
  %4458 = fcmp ogt double %4457, 0.000000e+00
  %4459 = select i1 %4458, double %4457, double 0.000000e+00
  %4460 = fptosi double %4459 to i64
  %4461 = add nsw i64 %4455, -2
  %4462 = tail call i64 @llvm.smin.i64(i64 %4461, i64 %4460)
  %4463 = sitofp i64 %4462 to double
  %4464 = fsub double %4457, %4463
  %4465 = fsub double 1.000000e+00, %4464
  %4466 = insertelement <2 x double> poison, double %4465, i64 0
  %4467 = shufflevector <2 x double> %4466, <2 x double> poison, <2 x i32> zeroinitializer
  %4468 = load ptr, ptr %4432, align 8, !tbaa !50
  %4469 = getelementptr inbounds <2 x double>, ptr %4468, i64 %4462
  %4470 = load <2 x double>, ptr %4469, align 16, !tbaa !26
  %4471 = insertelement <2 x double> poison, double %4464, i64 0
  %4472 = shufflevector <2 x double> %4471, <2 x double> poison, <2 x i32> zeroinitializer
  %4473 = getelementptr i8, ptr %4469, i64 16
  %4474 = load <2 x double>, ptr %4473, align 16, !tbaa !26
  %4475 = fmul <2 x double> %4474, %4472
  %4476 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4467, <2 x double> %4470, <2 x double> %4475)
  %4477 = getelementptr inbounds nuw i8, ptr %4395, i64 128
  store <2 x double> %4476, ptr %4477, align 16, !tbaa !26
  %4478 = load i64, ptr %133, align 8, !tbaa !22
  %4479 = sitofp i64 %4478 to double
  %4480 = tail call double @llvm.fmuladd.f64(double %4479, double 2.500000e-01, double -5.000000e-01)
  %4481 = fcmp ogt double %4480, 0.000000e+00
  %4482 = select i1 %4481, double %4480, double 0.000000e+00
  %4483 = fptosi double %4482 to i64
  %4484 = add nsw i64 %4478, -2
  %4485 = tail call i64 @llvm.smin.i64(i64 %4484, i64 %4483)
  %4486 = sitofp i64 %4485 to double
  %4487 = fsub double %4480, %4486
  %4488 = fsub double 1.000000e+00, %4487
  %4489 = insertelement <2 x double> poison, double %4488, i64 0
  %4490 = shufflevector <2 x double> %4489, <2 x double> poison, <2 x i32> zeroinitializer
  %4491 = load ptr, ptr %4432, align 8, !tbaa !50
  %4492 = getelementptr inbounds <2 x double>, ptr %4491, i64 %4485
  %4493 = load <2 x double>, ptr %4492, align 16, !tbaa !26
  %4494 = insertelement <2 x double> poison, double %4487, i64 0
  %4495 = shufflevector <2 x double> %4494, <2 x double> poison, <2 x i32> zeroinitializer
  %4496 = getelementptr i8, ptr %4492, i64 16
  %4497 = load <2 x double>, ptr %4496, align 16, !tbaa !26
  %4498 = fmul <2 x double> %4497, %4495
  %4499 = tail call <2 x double> @llvm.fmuladd.v2f64(<2 x double> %4490, <2 x double> %4493, <2 x double> %4498)
  %4500 = getelementptr inbounds nuw i8, ptr %4395, i64 144
  store <2 x double> %4499, ptr %4500, align 16, !tbaa !26
  %4501 = getelementptr inbounds nuw i8, ptr %4395, i64 160
  %4502 = add nuw nsw i64 %4396, 1
  %4503 = load i64, ptr %157, align 8, !tbaa !20
  %4504 = icmp slt i64 %4502, %4503
  br i1 %4504, label %4394, label %4505, !llvm.loop !133

4505:                                             ; preds = %4394, %4380, %4366
  %4506 = getelementptr inbounds nuw i8, ptr %4367, i64 48
  %4507 = extractelement <2 x i64> %3544, i64 0
  %4508 = extractelement <2 x i64> %3544, i64 1
  br label %4509

4509:                                             ; preds = %4505, %4652
  %4510 = phi i1 [ true, %4505 ], [ false, %4652 ]
  %4511 = phi i64 [ %4507, %4505 ], [ %4508, %4652 ]
  %4512 = phi i64 [ 0, %4505 ], [ 1, %4652 ]
  %4513 = icmp eq i64 %4511, 0
  br i1 %4513, label %4652, label %4514

4514:                                             ; preds = %4509
  %4515 = getelementptr inbounds nuw [2 x i64], ptr %225, i64 0, i64 %4512
  %4516 = load i64, ptr %4515, align 8, !tbaa !30
  %4517 = load i64, ptr %226, align 8, !tbaa !134
  %4518 = icmp eq i64 %4516, %4517
  br i1 %4518, label %4522, label %4519

4519:                                             ; preds = %4514
  %4520 = getelementptr inbounds nuw [2 x ptr], ptr %230, i64 0, i64 %4512
  %4521 = load ptr, ptr %4520, align 8, !tbaa !135
  br label %4537

4522:                                             ; preds = %4514
  %4523 = getelementptr inbounds nuw [2 x i64], ptr %134, i64 0, i64 %4512
  %4524 = load i64, ptr %4523, align 8, !tbaa !30
  %4525 = load ptr, ptr %227, align 8, !tbaa !136
  %4526 = load i64, ptr %125, align 8, !tbaa !41
  %4527 = getelementptr inbounds i64, ptr %4525, i64 %4526
  store i64 %4524, ptr %4527, align 8, !tbaa !30
  %4528 = load ptr, ptr %228, align 8, !tbaa !137
  %4529 = load i64, ptr %125, align 8, !tbaa !41
  %4530 = add nsw i64 %4529, 1
  store i64 %4530, ptr %125, align 8, !tbaa !41
  %4531 = load i64, ptr %226, align 8, !tbaa !134
  %4532 = mul nsw i64 %4531, %4529
  %4533 = load i64, ptr %229, align 8, !tbaa !15
  %4534 = mul nsw i64 %4532, %4533
  %4535 = getelementptr inbounds double, ptr %4528, i64 %4534
  %4536 = getelementptr inbounds nuw [2 x ptr], ptr %230, i64 0, i64 %4512
  store ptr %4535, ptr %4536, align 8, !tbaa !135
  br label %4537

4537:                                             ; preds = %4519, %4522
  %4538 = phi i64 [ %4516, %4519 ], [ 0, %4522 ]
  %4539 = phi ptr [ %4521, %4519 ], [ %4535, %4522 ]
  %4540 = add nsw i64 %4538, 1
  store i64 %4540, ptr %4515, align 8, !tbaa !30
  %4541 = load i64, ptr %229, align 8, !tbaa !15
  %4542 = mul nsw i64 %4541, %4538
  %4543 = getelementptr inbounds double, ptr %4539, i64 %4542
  %4544 = load ptr, ptr %222, align 16, !tbaa !38
  %4545 = icmp ult ptr %4544, %4363
  br i1 %4545, label %4605, label %4546

4546:                                             ; preds = %4605, %4537
  %4547 = phi ptr [ %4543, %4537 ], [ %4610, %4605 ]
  %4548 = load i64, ptr %141, align 16, !tbaa !16
  %4549 = icmp sgt i64 %4548, 0
  br i1 %4549, label %4550, label %4592

4550:                                             ; preds = %4546
  %4551 = and i64 %4548, 3
  %4552 = icmp ult i64 %4548, 4
  br i1 %4552, label %4577, label %4553

4553:                                             ; preds = %4550
  %4554 = and i64 %4548, 9223372036854775804
  br label %4555

4555:                                             ; preds = %4555, %4553
  %4556 = phi i64 [ 0, %4553 ], [ %4574, %4555 ]
  %4557 = phi ptr [ %4547, %4553 ], [ %4571, %4555 ]
  %4558 = phi i64 [ 0, %4553 ], [ %4575, %4555 ]
  %4559 = getelementptr i8, ptr %4557, i64 8
  %4560 = getelementptr inbounds nuw <2 x double>, ptr %4363, i64 %4556, i64 %4512
  %4561 = load double, ptr %4560, align 8
  store double %4561, ptr %4557, align 8, !tbaa !42
  %4562 = or disjoint i64 %4556, 1
  %4563 = getelementptr i8, ptr %4557, i64 16
  %4564 = getelementptr inbounds nuw <2 x double>, ptr %4363, i64 %4562, i64 %4512
  %4565 = load double, ptr %4564, align 8
  store double %4565, ptr %4559, align 8, !tbaa !42
  %4566 = or disjoint i64 %4556, 2
  %4567 = getelementptr i8, ptr %4557, i64 24
  %4568 = getelementptr inbounds nuw <2 x double>, ptr %4363, i64 %4566, i64 %4512
  %4569 = load double, ptr %4568, align 8
  store double %4569, ptr %4563, align 8, !tbaa !42
  %4570 = or disjoint i64 %4556, 3
  %4571 = getelementptr i8, ptr %4557, i64 32
  %4572 = getelementptr inbounds nuw <2 x double>, ptr %4363, i64 %4570, i64 %4512
  %4573 = load double, ptr %4572, align 8
  store double %4573, ptr %4567, align 8, !tbaa !42
  %4574 = add nuw nsw i64 %4556, 4
  %4575 = add i64 %4558, 4
  %4576 = icmp eq i64 %4575, %4554
  br i1 %4576, label %4577, label %4555, !llvm.loop !138

4577:                                             ; preds = %4555, %4550
  %4578 = phi ptr [ poison, %4550 ], [ %4571, %4555 ]
  %4579 = phi i64 [ 0, %4550 ], [ %4574, %4555 ]
  %4580 = phi ptr [ %4547, %4550 ], [ %4571, %4555 ]
  %4581 = icmp eq i64 %4551, 0
  br i1 %4581, label %4592, label %4582

4582:                                             ; preds = %4577, %4582
  %4583 = phi i64 [ %4589, %4582 ], [ %4579, %4577 ]
  %4584 = phi ptr [ %4586, %4582 ], [ %4580, %4577 ]
  %4585 = phi i64 [ %4590, %4582 ], [ 0, %4577 ]
  %4586 = getelementptr i8, ptr %4584, i64 8
  %4587 = getelementptr inbounds nuw <2 x double>, ptr %4363, i64 %4583, i64 %4512
  %4588 = load double, ptr %4587, align 8
  store double %4588, ptr %4584, align 8, !tbaa !42
  %4589 = add nuw nsw i64 %4583, 1
  %4590 = add i64 %4585, 1
  %4591 = icmp eq i64 %4590, %4551
  br i1 %4591, label %4592, label %4582, !llvm.loop !139

4592:                                             ; preds = %4577, %4582, %4546
  %4593 = phi ptr [ %4547, %4546 ], [ %4578, %4577 ], [ %4586, %4582 ]
  %4594 = load i64, ptr %224, align 8, !tbaa !131
  %4595 = icmp eq i64 %4594, 0
  br i1 %4595, label %4652, label %4596

4596:                                             ; preds = %4592
  %4597 = getelementptr inbounds nuw double, ptr %4367, i64 %4512
  %4598 = load double, ptr %4597, align 8, !tbaa !42
  %4599 = getelementptr inbounds nuw i8, ptr %4593, i64 8
  store double %4598, ptr %4593, align 8, !tbaa !42
  %4600 = getelementptr inbounds nuw i8, ptr %4597, i64 16
  %4601 = load double, ptr %4600, align 8, !tbaa !42
  %4602 = getelementptr inbounds nuw i8, ptr %4593, i64 16
  store double %4601, ptr %4599, align 8, !tbaa !42
  %4603 = getelementptr inbounds nuw i8, ptr %4597, i64 32
  %4604 = load double, ptr %4603, align 8, !tbaa !42
  store double %4604, ptr %4602, align 8, !tbaa !42
  br i1 %4549, label %4613, label %4652

4605:                                             ; preds = %4537, %4605
  %4606 = phi ptr [ %4611, %4605 ], [ %4544, %4537 ]
  %4607 = phi ptr [ %4610, %4605 ], [ %4543, %4537 ]
  %4608 = getelementptr inbounds nuw double, ptr %4606, i64 %4512
  %4609 = load double, ptr %4608, align 8, !tbaa !42
  %4610 = getelementptr inbounds nuw i8, ptr %4607, i64 8
  store double %4609, ptr %4607, align 8, !tbaa !42
  %4611 = getelementptr inbounds nuw i8, ptr %4606, i64 16
  %4612 = icmp ult ptr %4611, %4363
  br i1 %4612, label %4605, label %4546, !llvm.loop !140

4613:                                             ; preds = %4596
  %4614 = getelementptr inbounds nuw i8, ptr %4593, i64 24
  br label %4615

4615:                                             ; preds = %4613, %4615
  %4616 = phi i64 [ %4650, %4615 ], [ 0, %4613 ]
  %4617 = phi ptr [ %4649, %4615 ], [ %4614, %4613 ]
  %4618 = mul nuw nsw i64 %4616, 160
  %4619 = getelementptr inbounds nuw i8, ptr %4506, i64 %4618
  %4620 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 0, i64 %4512
  %4621 = load double, ptr %4620, align 8
  %4622 = getelementptr inbounds nuw i8, ptr %4617, i64 8
  store double %4621, ptr %4617, align 8, !tbaa !42
  %4623 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 1, i64 %4512
  %4624 = load double, ptr %4623, align 8
  %4625 = getelementptr inbounds nuw i8, ptr %4617, i64 16
  store double %4624, ptr %4622, align 8, !tbaa !42
  %4626 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 2, i64 %4512
  %4627 = load double, ptr %4626, align 8
  %4628 = getelementptr inbounds nuw i8, ptr %4617, i64 24
  store double %4627, ptr %4625, align 8, !tbaa !42
  %4629 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 3, i64 %4512
  %4630 = load double, ptr %4629, align 8
  %4631 = getelementptr inbounds nuw i8, ptr %4617, i64 32
  store double %4630, ptr %4628, align 8, !tbaa !42
  %4632 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 4, i64 %4512
  %4633 = load double, ptr %4632, align 8
  %4634 = getelementptr inbounds nuw i8, ptr %4617, i64 40
  store double %4633, ptr %4631, align 8, !tbaa !42
  %4635 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 5, i64 %4512
  %4636 = load double, ptr %4635, align 8
  %4637 = getelementptr inbounds nuw i8, ptr %4617, i64 48
  store double %4636, ptr %4634, align 8, !tbaa !42
  %4638 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 6, i64 %4512
  %4639 = load double, ptr %4638, align 8
  %4640 = getelementptr inbounds nuw i8, ptr %4617, i64 56
  store double %4639, ptr %4637, align 8, !tbaa !42
  %4641 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 7, i64 %4512
  %4642 = load double, ptr %4641, align 8
  %4643 = getelementptr inbounds nuw i8, ptr %4617, i64 64
  store double %4642, ptr %4640, align 8, !tbaa !42
  %4644 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 8, i64 %4512
  %4645 = load double, ptr %4644, align 8
  %4646 = getelementptr inbounds nuw i8, ptr %4617, i64 72
  store double %4645, ptr %4643, align 8, !tbaa !42
  %4647 = getelementptr inbounds nuw <2 x double>, ptr %4619, i64 9, i64 %4512
  %4648 = load double, ptr %4647, align 8
  %4649 = getelementptr inbounds nuw i8, ptr %4617, i64 80
  store double %4648, ptr %4646, align 8, !tbaa !42
  %4650 = add nuw nsw i64 %4616, 1
  %4651 = icmp eq i64 %4650, %4548
  br i1 %4651, label %4652, label %4615, !llvm.loop !138

4652:                                             ; preds = %4615, %4596, %4592, %4509
  br i1 %4510, label %4509, label %4653, !llvm.loop !141

4653:                                             ; preds = %4652
  %4654 = load <2 x double>, ptr %149, align 16, !tbaa !26
  %4655 = load <2 x double>, ptr %154, align 16, !tbaa !26
  %4656 = fsub <2 x double> %4654, %4655
  %4657 = load <2 x double>, ptr %155, align 16, !tbaa !26
  %4658 = fadd <2 x double> %4657, splat (double -1.000000e-09)
  %4659 = fcmp oge <2 x double> %4656, %4658
  %4660 = select <2 x i1> %4659, <2 x i64> %3544, <2 x i64> zeroinitializer
  %4661 = load i64, ptr %157, align 8, !tbaa !20
  %4662 = icmp sgt i64 %4661, 0
  br i1 %4662, label %4663, label %4711

4663:                                             ; preds = %4653
  %4664 = load ptr, ptr %142, align 8, !tbaa !28
  %4665 = and i64 %4661, 3
  %4666 = icmp ult i64 %4661, 4
  br i1 %4666, label %4695, label %4667

4667:                                             ; preds = %4663
  %4668 = and i64 %4661, 9223372036854775804
  br label %4669

4669:                                             ; preds = %4669, %4667
  %4670 = phi i64 [ 0, %4667 ], [ %4692, %4669 ]
  %4671 = phi <2 x double> [ splat (double 1.000000e+09), %4667 ], [ %4691, %4669 ]
  %4672 = phi i64 [ 0, %4667 ], [ %4693, %4669 ]
  %4673 = getelementptr inbounds nuw %struct.Piece, ptr %4664, i64 %4670, i32 35
  %4674 = load <2 x double>, ptr %4673, align 16, !tbaa !26
  %4675 = fcmp olt <2 x double> %4671, %4674
  %4676 = select <2 x i1> %4675, <2 x double> %4671, <2 x double> %4674
  %4677 = or disjoint i64 %4670, 1
  %4678 = getelementptr inbounds nuw %struct.Piece, ptr %4664, i64 %4677, i32 35
  %4679 = load <2 x double>, ptr %4678, align 16, !tbaa !26
  %4680 = fcmp olt <2 x double> %4676, %4679
  %4681 = select <2 x i1> %4680, <2 x double> %4676, <2 x double> %4679
  %4682 = or disjoint i64 %4670, 2
  %4683 = getelementptr inbounds nuw %struct.Piece, ptr %4664, i64 %4682, i32 35
  %4684 = load <2 x double>, ptr %4683, align 16, !tbaa !26
  %4685 = fcmp olt <2 x double> %4681, %4684
  %4686 = select <2 x i1> %4685, <2 x double> %4681, <2 x double> %4684
  %4687 = or disjoint i64 %4670, 3
  %4688 = getelementptr inbounds nuw %struct.Piece, ptr %4664, i64 %4687, i32 35
  %4689 = load <2 x double>, ptr %4688, align 16, !tbaa !26
  %4690 = fcmp olt <2 x double> %4686, %4689
  %4691 = select <2 x i1> %4690, <2 x double> %4686, <2 x double> %4689
  %4692 = add nuw nsw i64 %4670, 4
  %4693 = add i64 %4672, 4
  %4694 = icmp eq i64 %4693, %4668
  br i1 %4694, label %4695, label %4669, !llvm.loop !114

4695:                                             ; preds = %4669, %4663
  %4696 = phi <2 x double> [ poison, %4663 ], [ %4691, %4669 ]
  %4697 = phi i64 [ 0, %4663 ], [ %4692, %4669 ]
  %4698 = phi <2 x double> [ splat (double 1.000000e+09), %4663 ], [ %4691, %4669 ]
  %4699 = icmp eq i64 %4665, 0
  br i1 %4699, label %4711, label %4700

4700:                                             ; preds = %4695, %4700
  %4701 = phi i64 [ %4708, %4700 ], [ %4697, %4695 ]
  %4702 = phi <2 x double> [ %4707, %4700 ], [ %4698, %4695 ]
  %4703 = phi i64 [ %4709, %4700 ], [ 0, %4695 ]
  %4704 = getelementptr inbounds nuw %struct.Piece, ptr %4664, i64 %4701, i32 35
  %4705 = load <2 x double>, ptr %4704, align 16, !tbaa !26
  %4706 = fcmp olt <2 x double> %4702, %4705
  %4707 = select <2 x i1> %4706, <2 x double> %4702, <2 x double> %4705
  %4708 = add nuw nsw i64 %4701, 1
  %4709 = add i64 %4703, 1
  %4710 = icmp eq i64 %4709, %4665
  br i1 %4710, label %4711, label %4700, !llvm.loop !142

4711:                                             ; preds = %4695, %4700, %4653
  %4712 = phi <2 x double> [ splat (double 1.000000e+09), %4653 ], [ %4696, %4695 ], [ %4707, %4700 ]
  %4713 = load <2 x double>, ptr %218, align 16, !tbaa !26
  %4714 = select <2 x i1> %3604, <2 x double> %4713, <2 x double> %4712
  store <2 x double> %4714, ptr %218, align 16, !tbaa !26
  %4715 = load <2 x double>, ptr %219, align 16, !tbaa !26
  %4716 = fcmp une <2 x double> %4715, zeroinitializer
  %4717 = load <2 x double>, ptr %191, align 16, !tbaa !26
  %4718 = load <2 x double>, ptr %182, align 16, !tbaa !26
  %4719 = fsub <2 x double> %4717, %4718
  %4720 = fcmp une <2 x double> %4715, splat (double 1.000000e+00)
  %4721 = load <2 x double>, ptr %165, align 16, !tbaa !26
  %4722 = load <2 x double>, ptr %220, align 16, !tbaa !26
  %4723 = fsub <2 x double> %4721, %4722
  %4724 = select <2 x i1> %4720, <2 x double> splat (double -1.000000e+00), <2 x double> %4723
  %4725 = fcmp une <2 x double> %4715, splat (double 2.000000e+00)
  %4726 = fsub <2 x double> %4714, %4722
  %4727 = select <2 x i1> %4725, <2 x double> %4724, <2 x double> %4726
  %4728 = fcmp une <2 x double> %4715, splat (double 3.000000e+00)
  %4729 = fsub <2 x double> %4719, %4722
  %4730 = select <2 x i1> %4728, <2 x double> %4727, <2 x double> %4729
  %4731 = fcmp une <2 x double> %4715, splat (double 4.000000e+00)
  %4732 = fsub <2 x double> %4722, %4719
  %4733 = select <2 x i1> %4731, <2 x double> %4730, <2 x double> %4732
  %4734 = fcmp oge <2 x double> %4733, splat (double 0xBEB0C6F7A0B5ED8D)
  %4735 = select <2 x i1> %4734, <2 x i1> %4716, <2 x i1> zeroinitializer
  %4736 = select <2 x i1> %4735, <2 x i64> %3544, <2 x i64> zeroinitializer
  %4737 = xor <2 x i64> %4736, splat (i64 -1)
  %4738 = and <2 x i64> %4660, %4737
  %4739 = load <2 x double>, ptr %139, align 16, !tbaa !26
  %4740 = icmp ne <2 x i64> %4738, zeroinitializer
  %4741 = select <2 x i1> %4716, <2 x i1> %4740, <2 x i1> zeroinitializer
  %4742 = select <2 x i1> %4741, <2 x double> splat (double 2.000000e+00), <2 x double> %4739
  store <2 x double> %4742, ptr %139, align 16, !tbaa !26
  %4743 = or <2 x i64> %4736, %4660
  %4744 = load <2 x double>, ptr %223, align 16, !tbaa !26
  %4745 = fadd <2 x double> %4744, splat (double 1.000000e+00)
  %4746 = icmp eq <2 x i64> %4743, zeroinitializer
  %4747 = select <2 x i1> %4746, <2 x double> %4744, <2 x double> %4745
  store <2 x double> %4747, ptr %223, align 16, !tbaa !26
  %4748 = xor <2 x i64> %4743, %3544
  %4749 = load <2 x double>, ptr %174, align 16, !tbaa !26
  %4750 = fcmp oeq <2 x double> %4749, zeroinitializer
  %4751 = load <2 x double>, ptr %173, align 16, !tbaa !26
  %4752 = fcmp oeq <2 x double> %4751, zeroinitializer
  %4753 = select <2 x i1> %4752, <2 x i1> %4750, <2 x i1> zeroinitializer
  %4754 = select <2 x i1> %4753, <2 x i64> %4748, <2 x i64> zeroinitializer
  %4755 = load <2 x double>, ptr %217, align 16, !tbaa !26
  %4756 = fmul <2 x double> %4755, splat (double 5.000000e-01)
  %4757 = load <2 x double>, ptr %205, align 16, !tbaa !26
  %4758 = fadd <2 x double> %4757, %4756
  %4759 = fadd <2 x double> %4758, splat (double -1.000000e-03)
  %4760 = fcmp ult <2 x double> %4721, %4759
  %4761 = fsub <2 x double> %4757, %4756
  %4762 = fadd <2 x double> %4761, splat (double 1.000000e-03)
  %4763 = fcmp ole <2 x double> %4721, %4762
  %4764 = load <2 x i64>, ptr %167, align 16, !tbaa !26
  %4765 = select <2 x i1> %4763, <2 x i64> splat (i64 -1), <2 x i64> %4764
  %4766 = select <2 x i1> %4760, <2 x i64> %4765, <2 x i64> zeroinitializer
  %4767 = xor <2 x i64> %4766, %4764
  %4768 = and <2 x i64> %4767, %4754
  %4769 = and <2 x i64> %4766, %4754
  %4770 = xor <2 x i64> %4754, splat (i64 -1)
  %4771 = and <2 x i64> %4764, %4770
  %4772 = or disjoint <2 x i64> %4769, %4771
  store <2 x i64> %4772, ptr %167, align 16, !tbaa !26
  %4773 = load <2 x i64>, ptr %160, align 16, !tbaa !26
  %4774 = or <2 x i64> %4768, %4773
  store <2 x i64> %4774, ptr %160, align 16, !tbaa !26
  %4775 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4743)
  %4776 = icmp eq i64 %4775, 0
  br i1 %4776, label %4787, label %4777

4777:                                             ; preds = %4711
  %4778 = extractelement <2 x i64> %4743, i64 0
  %4779 = icmp eq i64 %4778, 0
  br i1 %4779, label %4781, label %4780

4780:                                             ; preds = %4777
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 0) #7
  br label %4781

4781:                                             ; preds = %4780, %4777
  %4782 = extractelement <2 x i64> %4743, i64 1
  %4783 = icmp eq i64 %4782, 0
  br i1 %4783, label %4785, label %4784

4784:                                             ; preds = %4781
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %1, ptr noundef nonnull align 8 dereferenceable(216) %0, i32 noundef 1) #7
  br label %4785

4785:                                             ; preds = %4784, %4781
  %4786 = load <2 x double>, ptr %139, align 16, !tbaa !26
  br label %4787

4787:                                             ; preds = %4785, %4711
  %4788 = phi <2 x double> [ %4786, %4785 ], [ %4742, %4711 ]
  %4789 = load <2 x double>, ptr %136, align 16, !tbaa !26
  %4790 = load <2 x double>, ptr %231, align 16, !tbaa !26
  %4791 = fadd <2 x double> %4790, splat (double -1.000000e+00)
  %4792 = fcmp oge <2 x double> %4789, %4791
  %4793 = select <2 x i1> %4792, <2 x i64> %3544, <2 x i64> zeroinitializer
  %4794 = icmp eq <2 x i64> %4793, zeroinitializer
  %4795 = select <2 x i1> %4794, <2 x double> %4788, <2 x double> splat (double 1.000000e+00)
  store <2 x double> %4795, ptr %139, align 16, !tbaa !26
  %4796 = tail call i64 @llvm.vector.reduce.or.v2i64(<2 x i64> %4793)
  %4797 = icmp eq i64 %4796, 0
  br i1 %4797, label %524, label %4798

4798:                                             ; preds = %4787
  %4799 = extractelement <2 x i64> %4793, i64 0
  %4800 = icmp eq i64 %4799, 0
  br i1 %4800, label %4802, label %4801

4801:                                             ; preds = %4798
  store double 1.000000e+00, ptr %131, align 8, !tbaa !42
  br label %4802

4802:                                             ; preds = %4801, %4798
  %4803 = extractelement <2 x i64> %4793, i64 1
  %4804 = icmp eq i64 %4803, 0
  br i1 %4804, label %524, label %4805

4805:                                             ; preds = %4802
  store double 1.000000e+00, ptr %261, align 8, !tbaa !42
  br label %524

4806:                                             ; preds = %524, %529, %122
  %4807 = phi i64 [ 0, %122 ], [ 1, %529 ], [ 0, %524 ]
  ret i64 %4807
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL10begin_cookR5GroupR3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %0, ptr nocapture noundef nonnull align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  store <2 x i64> zeroinitializer, ptr %4, align 16, !tbaa !26
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 616
  %6 = zext nneg i32 %2 to i64
  %7 = load i64, ptr %5, align 8, !tbaa !27
  tail call fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1536) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2, i64 noundef %7) #7
  %8 = getelementptr inbounds nuw i64, ptr %4, i64 %6
  store i64 -1, ptr %8, align 8, !tbaa !30
  tail call fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr noundef nonnull align 16 dereferenceable(1536) %0, ptr noundef nonnull align 8 dereferenceable(216) %1, i32 noundef %2) #7
  %9 = load i64, ptr %5, align 8, !tbaa !27
  %10 = add nsw i64 %9, 1
  store i64 %10, ptr %5, align 8, !tbaa !27
  %11 = getelementptr inbounds nuw i8, ptr %0, i64 1520
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
  %30 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  %63 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  %178 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %179 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %180 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %181 = getelementptr inbounds nuw i8, ptr %1, i64 168
  %182 = load ptr, ptr %181, align 8
  %183 = getelementptr inbounds nuw i8, ptr %1, i64 184
  %184 = getelementptr inbounds nuw i8, ptr %1, i64 160
  %185 = getelementptr inbounds nuw i8, ptr %1, i64 48
  %186 = getelementptr inbounds nuw i8, ptr %0, i64 1488
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
define internal fastcc void @_ZL4loadR5GroupRK3Jobix(ptr noundef nonnull align 16 dereferenceable(1536) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, i64 noundef %3) unnamed_addr #3 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 1424
  %6 = zext nneg i32 %2 to i64
  %7 = getelementptr inbounds nuw [2 x i64], ptr %5, i64 0, i64 %6
  store i64 %3, ptr %7, align 8, !tbaa !30
  %8 = getelementptr inbounds nuw i8, ptr %1, i64 56
  %9 = load i64, ptr %8, align 8, !tbaa !134
  %10 = getelementptr inbounds nuw i8, ptr %0, i64 1440
  %11 = getelementptr inbounds nuw [2 x i64], ptr %10, i64 0, i64 %6
  store i64 %9, ptr %11, align 8, !tbaa !30
  %12 = getelementptr inbounds nuw i8, ptr %0, i64 1456
  %13 = shl nuw nsw i32 %2, 1
  %14 = or disjoint i32 %13, 1
  %15 = zext nneg i32 %14 to i64
  %16 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %15
  store i64 0, ptr %16, align 8, !tbaa !30
  %17 = zext nneg i32 %13 to i64
  %18 = getelementptr inbounds nuw [4 x i64], ptr %12, i64 0, i64 %17
  store i64 0, ptr %18, align 16, !tbaa !30
  %19 = getelementptr inbounds nuw i8, ptr %0, i64 1504
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
  %31 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  br label %154

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

61:                                               ; preds = %533, %26
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
  %135 = getelementptr inbounds nuw double, ptr %124, i64 %6
  store double 0.000000e+00, ptr %135, align 8, !tbaa !42
  %136 = getelementptr inbounds nuw double, ptr %125, i64 %6
  store double 0.000000e+00, ptr %136, align 8, !tbaa !42
  %137 = getelementptr inbounds nuw double, ptr %126, i64 %6
  store double 0.000000e+00, ptr %137, align 8, !tbaa !42
  %138 = getelementptr inbounds nuw double, ptr %127, i64 %6
  store double 0.000000e+00, ptr %138, align 8, !tbaa !42
  %139 = getelementptr inbounds nuw double, ptr %128, i64 %6
  store double 0.000000e+00, ptr %139, align 8, !tbaa !42
  %140 = getelementptr inbounds nuw double, ptr %129, i64 %6
  store double 0.000000e+00, ptr %140, align 8, !tbaa !42
  %141 = getelementptr inbounds nuw double, ptr %130, i64 %6
  store double 0.000000e+00, ptr %141, align 8, !tbaa !42
  %142 = getelementptr inbounds nuw double, ptr %131, i64 %6
  store double 0.000000e+00, ptr %142, align 8, !tbaa !42
  %143 = getelementptr inbounds nuw double, ptr %132, i64 %6
  store double 0.000000e+00, ptr %143, align 8, !tbaa !42
  %144 = getelementptr inbounds nuw double, ptr %133, i64 %6
  store double 0.000000e+00, ptr %144, align 8, !tbaa !42
  %145 = getelementptr inbounds nuw double, ptr %134, i64 %6
  store double 0.000000e+00, ptr %145, align 8, !tbaa !42
  %146 = getelementptr inbounds nuw i8, ptr %0, i64 1392
  %147 = getelementptr inbounds nuw i64, ptr %146, i64 %6
  store i64 0, ptr %147, align 8, !tbaa !30
  %148 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %149 = getelementptr inbounds nuw i64, ptr %148, i64 %6
  store i64 -1, ptr %149, align 8, !tbaa !30
  %150 = getelementptr inbounds nuw i8, ptr %0, i64 1376
  %151 = getelementptr inbounds nuw i64, ptr %150, i64 %6
  store i64 -1, ptr %151, align 8, !tbaa !30
  %152 = getelementptr inbounds nuw i8, ptr %0, i64 1360
  %153 = getelementptr inbounds nuw i64, ptr %152, i64 %6
  store i64 -1, ptr %153, align 8, !tbaa !30
  ret void

154:                                              ; preds = %30, %533
  %155 = phi i64 [ 0, %30 ], [ %534, %533 ]
  %156 = getelementptr inbounds nuw %struct.Piece, ptr %32, i64 %155
  %157 = load i64, ptr %33, align 16, !tbaa !21
  %158 = load i64, ptr %34, align 8, !tbaa !22
  %159 = load i64, ptr %35, align 16, !tbaa !16
  %160 = mul nsw i64 %159, %3
  %161 = add nsw i64 %160, %155
  %162 = getelementptr inbounds nuw i8, ptr %156, i64 1888
  %163 = load i64, ptr %162, align 16, !tbaa !31
  %164 = mul i64 %161, 368
  %165 = getelementptr i8, ptr %37, i64 %164
  %166 = getelementptr inbounds nuw double, ptr %156, i64 %6
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
  %180 = getelementptr inbounds nuw i8, ptr %156, i64 1984
  %181 = load ptr, ptr %180, align 16, !tbaa !67
  %182 = getelementptr inbounds nuw double, ptr %181, i64 %6
  %183 = getelementptr double, ptr %177, i64 %157
  %184 = getelementptr inbounds nuw i8, ptr %156, i64 1992
  %185 = load ptr, ptr %184, align 8, !tbaa !48
  %186 = getelementptr inbounds nuw double, ptr %185, i64 %6
  %187 = shl i64 %157, 4
  %188 = getelementptr i8, ptr %177, i64 %187
  %189 = getelementptr inbounds nuw i8, ptr %156, i64 2000
  %190 = load ptr, ptr %189, align 16, !tbaa !118
  %191 = getelementptr inbounds nuw double, ptr %190, i64 %6
  %192 = and i64 %157, 1
  %193 = icmp eq i64 %157, 1
  br i1 %193, label %207, label %194

194:                                              ; preds = %179
  %195 = and i64 %157, 9223372036854775806
  br label %235

196:                                              ; preds = %196, %154
  %197 = phi i64 [ 0, %154 ], [ %205, %196 ]
  %198 = getelementptr double, ptr %165, i64 %197
  %199 = load double, ptr %198, align 8, !tbaa !42
  %200 = getelementptr inbounds nuw <2 x double>, ptr %166, i64 %197
  store double %199, ptr %200, align 8, !tbaa !42
  %201 = or disjoint i64 %197, 1
  %202 = getelementptr double, ptr %165, i64 %201
  %203 = load double, ptr %202, align 8, !tbaa !42
  %204 = getelementptr inbounds nuw <2 x double>, ptr %166, i64 %201
  store double %203, ptr %204, align 8, !tbaa !42
  %205 = add nuw nsw i64 %197, 2
  %206 = icmp eq i64 %205, 46
  br i1 %206, label %167, label %196, !llvm.loop !149

207:                                              ; preds = %235, %179
  %208 = phi i64 [ 0, %179 ], [ %257, %235 ]
  %209 = icmp eq i64 %192, 0
  br i1 %209, label %220, label %210

210:                                              ; preds = %207
  %211 = getelementptr inbounds nuw double, ptr %177, i64 %208
  %212 = load double, ptr %211, align 8, !tbaa !42
  %213 = getelementptr inbounds nuw <2 x double>, ptr %182, i64 %208
  store double %212, ptr %213, align 8, !tbaa !42
  %214 = getelementptr double, ptr %183, i64 %208
  %215 = load double, ptr %214, align 8, !tbaa !42
  %216 = getelementptr inbounds nuw <2 x double>, ptr %186, i64 %208
  store double %215, ptr %216, align 8, !tbaa !42
  %217 = getelementptr double, ptr %188, i64 %208
  %218 = load double, ptr %217, align 8, !tbaa !42
  %219 = getelementptr inbounds nuw <2 x double>, ptr %191, i64 %208
  store double %218, ptr %219, align 8, !tbaa !42
  br label %220

220:                                              ; preds = %210, %207, %167
  %221 = getelementptr inbounds nuw i8, ptr %156, i64 240
  %222 = getelementptr inbounds nuw double, ptr %221, i64 %6
  %223 = load double, ptr %222, align 8, !tbaa !42
  %224 = load double, ptr %166, align 8, !tbaa !42
  %225 = icmp sgt i64 %174, 0
  br i1 %225, label %226, label %272

226:                                              ; preds = %220
  %227 = getelementptr double, ptr %177, i64 %171
  %228 = getelementptr inbounds nuw i8, ptr %156, i64 2008
  %229 = load ptr, ptr %228, align 8, !tbaa !35
  %230 = getelementptr inbounds nuw double, ptr %229, i64 %6
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
  %239 = load double, ptr %238, align 8, !tbaa !42
  %240 = getelementptr inbounds nuw <2 x double>, ptr %182, i64 %236
  store double %239, ptr %240, align 8, !tbaa !42
  %241 = getelementptr double, ptr %183, i64 %236
  %242 = load double, ptr %241, align 8, !tbaa !42
  %243 = getelementptr inbounds nuw <2 x double>, ptr %186, i64 %236
  store double %242, ptr %243, align 8, !tbaa !42
  %244 = getelementptr double, ptr %188, i64 %236
  %245 = load double, ptr %244, align 8, !tbaa !42
  %246 = getelementptr inbounds nuw <2 x double>, ptr %191, i64 %236
  store double %245, ptr %246, align 8, !tbaa !42
  %247 = or disjoint i64 %236, 1
  %248 = getelementptr inbounds nuw double, ptr %177, i64 %247
  %249 = load double, ptr %248, align 8, !tbaa !42
  %250 = getelementptr inbounds nuw <2 x double>, ptr %182, i64 %247
  store double %249, ptr %250, align 8, !tbaa !42
  %251 = getelementptr double, ptr %183, i64 %247
  %252 = load double, ptr %251, align 8, !tbaa !42
  %253 = getelementptr inbounds nuw <2 x double>, ptr %186, i64 %247
  store double %252, ptr %253, align 8, !tbaa !42
  %254 = getelementptr double, ptr %188, i64 %247
  %255 = load double, ptr %254, align 8, !tbaa !42
  %256 = getelementptr inbounds nuw <2 x double>, ptr %191, i64 %247
  store double %255, ptr %256, align 8, !tbaa !42
  %257 = add nuw nsw i64 %236, 2
  %258 = add i64 %237, 2
  %259 = icmp eq i64 %258, %195
  br i1 %259, label %207, label %235, !llvm.loop !150

260:                                              ; preds = %281, %226
  %261 = phi i64 [ 0, %226 ], [ %299, %281 ]
  %262 = icmp eq i64 %231, 0
  br i1 %262, label %272, label %263

263:                                              ; preds = %260, %263
  %264 = phi i64 [ %269, %263 ], [ %261, %260 ]
  %265 = phi i64 [ %270, %263 ], [ 0, %260 ]
  %266 = getelementptr double, ptr %227, i64 %264
  %267 = load double, ptr %266, align 8, !tbaa !42
  %268 = getelementptr inbounds nuw <2 x double>, ptr %230, i64 %264
  store double %267, ptr %268, align 8, !tbaa !42
  %269 = add nuw nsw i64 %264, 1
  %270 = add i64 %265, 1
  %271 = icmp eq i64 %270, %231
  br i1 %271, label %272, label %263, !llvm.loop !151

272:                                              ; preds = %260, %263, %220
  %273 = icmp ne i64 %163, 0
  %274 = icmp sgt i64 %157, -1
  %275 = select i1 %273, i1 %274, i1 false
  br i1 %275, label %276, label %302

276:                                              ; preds = %272
  %277 = fdiv double 1.000000e+00, %224
  %278 = getelementptr inbounds nuw i8, ptr %156, i64 2008
  %279 = load ptr, ptr %278, align 8, !tbaa !35
  %280 = getelementptr inbounds nuw double, ptr %279, i64 %6
  br label %421

281:                                              ; preds = %281, %233
  %282 = phi i64 [ 0, %233 ], [ %299, %281 ]
  %283 = phi i64 [ 0, %233 ], [ %300, %281 ]
  %284 = getelementptr double, ptr %227, i64 %282
  %285 = load double, ptr %284, align 8, !tbaa !42
  %286 = getelementptr inbounds nuw <2 x double>, ptr %230, i64 %282
  store double %285, ptr %286, align 8, !tbaa !42
  %287 = or disjoint i64 %282, 1
  %288 = getelementptr double, ptr %227, i64 %287
  %289 = load double, ptr %288, align 8, !tbaa !42
  %290 = getelementptr inbounds nuw <2 x double>, ptr %230, i64 %287
  store double %289, ptr %290, align 8, !tbaa !42
  %291 = or disjoint i64 %282, 2
  %292 = getelementptr double, ptr %227, i64 %291
  %293 = load double, ptr %292, align 8, !tbaa !42
  %294 = getelementptr inbounds nuw <2 x double>, ptr %230, i64 %291
  store double %293, ptr %294, align 8, !tbaa !42
  %295 = or disjoint i64 %282, 3
  %296 = getelementptr double, ptr %227, i64 %295
  %297 = load double, ptr %296, align 8, !tbaa !42
  %298 = getelementptr inbounds nuw <2 x double>, ptr %230, i64 %295
  store double %297, ptr %298, align 8, !tbaa !42
  %299 = add nuw nsw i64 %282, 4
  %300 = add i64 %283, 4
  %301 = icmp eq i64 %300, %234
  br i1 %301, label %260, label %281, !llvm.loop !152

302:                                              ; preds = %421, %272
  %303 = getelementptr inbounds nuw i8, ptr %156, i64 640
  %304 = getelementptr inbounds nuw double, ptr %303, i64 %6
  %305 = load double, ptr %304, align 8, !tbaa !42
  %306 = getelementptr inbounds nuw i8, ptr %156, i64 656
  %307 = getelementptr inbounds nuw double, ptr %306, i64 %6
  %308 = load double, ptr %307, align 8, !tbaa !42
  %309 = getelementptr inbounds nuw i8, ptr %156, i64 672
  %310 = getelementptr inbounds nuw double, ptr %309, i64 %6
  %311 = load double, ptr %310, align 8, !tbaa !42
  %312 = getelementptr inbounds nuw i8, ptr %156, i64 688
  %313 = getelementptr inbounds nuw double, ptr %312, i64 %6
  %314 = load double, ptr %313, align 8, !tbaa !42
  %315 = tail call double @llvm.fmuladd.f64(double %224, double %314, double %311)
  %316 = tail call double @llvm.fmuladd.f64(double %224, double %315, double %308)
  %317 = tail call double @llvm.fmuladd.f64(double %224, double %316, double %305)
  %318 = getelementptr inbounds nuw i8, ptr %156, i64 208
  %319 = getelementptr inbounds nuw double, ptr %318, i64 %6
  %320 = load double, ptr %319, align 8, !tbaa !42
  %321 = getelementptr inbounds nuw i8, ptr %156, i64 352
  %322 = getelementptr inbounds nuw double, ptr %321, i64 %6
  %323 = load double, ptr %322, align 8, !tbaa !42
  %324 = getelementptr inbounds nuw i8, ptr %156, i64 384
  %325 = getelementptr inbounds nuw double, ptr %324, i64 %6
  %326 = load double, ptr %325, align 8, !tbaa !42
  %327 = fsub double %323, %326
  %328 = fmul double %320, %327
  %329 = getelementptr inbounds nuw i8, ptr %156, i64 736
  %330 = getelementptr inbounds nuw i8, ptr %156, i64 928
  %331 = getelementptr inbounds nuw i8, ptr %156, i64 1120
  %332 = getelementptr inbounds nuw i8, ptr %156, i64 224
  %333 = getelementptr inbounds nuw double, ptr %332, i64 %6
  %334 = getelementptr inbounds nuw i8, ptr %156, i64 256
  %335 = getelementptr inbounds nuw double, ptr %334, i64 %6
  %336 = getelementptr inbounds nuw double, ptr %329, i64 %6
  %337 = getelementptr inbounds nuw i8, ptr %336, i64 80
  store double 0.000000e+00, ptr %337, align 8, !tbaa !42
  %338 = getelementptr inbounds nuw i8, ptr %336, i64 96
  store double 0.000000e+00, ptr %338, align 8, !tbaa !42
  %339 = getelementptr inbounds nuw i8, ptr %336, i64 112
  store double 0.000000e+00, ptr %339, align 8, !tbaa !42
  %340 = getelementptr inbounds nuw i8, ptr %336, i64 128
  store double 0.000000e+00, ptr %340, align 8, !tbaa !42
  %341 = getelementptr inbounds nuw i8, ptr %336, i64 160
  store double 0.000000e+00, ptr %341, align 8, !tbaa !42
  store double %224, ptr %336, align 8, !tbaa !42
  %342 = getelementptr inbounds nuw i8, ptr %156, i64 752
  %343 = getelementptr inbounds nuw double, ptr %342, i64 %6
  store double %323, ptr %343, align 8, !tbaa !42
  %344 = load double, ptr %333, align 8, !tbaa !42
  %345 = getelementptr inbounds nuw i8, ptr %156, i64 768
  %346 = getelementptr inbounds nuw double, ptr %345, i64 %6
  store double %344, ptr %346, align 8, !tbaa !42
  %347 = getelementptr inbounds nuw i8, ptr %156, i64 784
  %348 = getelementptr inbounds nuw double, ptr %347, i64 %6
  store double %328, ptr %348, align 8, !tbaa !42
  %349 = getelementptr inbounds nuw i8, ptr %156, i64 880
  %350 = getelementptr inbounds nuw double, ptr %349, i64 %6
  store double %223, ptr %350, align 8, !tbaa !42
  %351 = load double, ptr %335, align 8, !tbaa !42
  %352 = getelementptr inbounds nuw i8, ptr %156, i64 800
  %353 = getelementptr inbounds nuw double, ptr %352, i64 %6
  store double %351, ptr %353, align 8, !tbaa !42
  %354 = getelementptr inbounds nuw i8, ptr %156, i64 912
  %355 = getelementptr inbounds nuw double, ptr %354, i64 %6
  store double %317, ptr %355, align 8, !tbaa !42
  %356 = getelementptr inbounds nuw double, ptr %330, i64 %6
  %357 = getelementptr inbounds nuw i8, ptr %356, i64 80
  store double 0.000000e+00, ptr %357, align 8, !tbaa !42
  %358 = getelementptr inbounds nuw i8, ptr %356, i64 96
  store double 0.000000e+00, ptr %358, align 8, !tbaa !42
  %359 = getelementptr inbounds nuw i8, ptr %356, i64 112
  store double 0.000000e+00, ptr %359, align 8, !tbaa !42
  %360 = getelementptr inbounds nuw i8, ptr %356, i64 128
  store double 0.000000e+00, ptr %360, align 8, !tbaa !42
  %361 = getelementptr inbounds nuw i8, ptr %356, i64 160
  store double 0.000000e+00, ptr %361, align 8, !tbaa !42
  store double %224, ptr %356, align 8, !tbaa !42
  %362 = getelementptr inbounds nuw i8, ptr %156, i64 944
  %363 = getelementptr inbounds nuw double, ptr %362, i64 %6
  store double %323, ptr %363, align 8, !tbaa !42
  %364 = getelementptr inbounds nuw i8, ptr %156, i64 960
  %365 = getelementptr inbounds nuw double, ptr %364, i64 %6
  store double %344, ptr %365, align 8, !tbaa !42
  %366 = getelementptr inbounds nuw i8, ptr %156, i64 976
  %367 = getelementptr inbounds nuw double, ptr %366, i64 %6
  store double %328, ptr %367, align 8, !tbaa !42
  %368 = getelementptr inbounds nuw i8, ptr %156, i64 1072
  %369 = getelementptr inbounds nuw double, ptr %368, i64 %6
  store double %223, ptr %369, align 8, !tbaa !42
  %370 = getelementptr inbounds nuw i8, ptr %156, i64 992
  %371 = getelementptr inbounds nuw double, ptr %370, i64 %6
  store double %351, ptr %371, align 8, !tbaa !42
  %372 = getelementptr inbounds nuw i8, ptr %156, i64 1104
  %373 = getelementptr inbounds nuw double, ptr %372, i64 %6
  store double %317, ptr %373, align 8, !tbaa !42
  %374 = getelementptr inbounds nuw double, ptr %331, i64 %6
  %375 = getelementptr inbounds nuw i8, ptr %374, i64 80
  store double 0.000000e+00, ptr %375, align 8, !tbaa !42
  %376 = getelementptr inbounds nuw i8, ptr %374, i64 96
  store double 0.000000e+00, ptr %376, align 8, !tbaa !42
  %377 = getelementptr inbounds nuw i8, ptr %374, i64 112
  store double 0.000000e+00, ptr %377, align 8, !tbaa !42
  %378 = getelementptr inbounds nuw i8, ptr %374, i64 128
  store double 0.000000e+00, ptr %378, align 8, !tbaa !42
  %379 = getelementptr inbounds nuw i8, ptr %374, i64 160
  store double 0.000000e+00, ptr %379, align 8, !tbaa !42
  store double %224, ptr %374, align 8, !tbaa !42
  %380 = load double, ptr %322, align 8, !tbaa !42
  %381 = getelementptr inbounds nuw i8, ptr %156, i64 1136
  %382 = getelementptr inbounds nuw double, ptr %381, i64 %6
  store double %380, ptr %382, align 8, !tbaa !42
  %383 = getelementptr inbounds nuw i8, ptr %156, i64 1152
  %384 = getelementptr inbounds nuw double, ptr %383, i64 %6
  store double %344, ptr %384, align 8, !tbaa !42
  %385 = getelementptr inbounds nuw i8, ptr %156, i64 1168
  %386 = getelementptr inbounds nuw double, ptr %385, i64 %6
  store double %328, ptr %386, align 8, !tbaa !42
  %387 = getelementptr inbounds nuw i8, ptr %156, i64 1264
  %388 = getelementptr inbounds nuw double, ptr %387, i64 %6
  store double %223, ptr %388, align 8, !tbaa !42
  %389 = getelementptr inbounds nuw i8, ptr %156, i64 1184
  %390 = getelementptr inbounds nuw double, ptr %389, i64 %6
  store double %351, ptr %390, align 8, !tbaa !42
  %391 = getelementptr inbounds nuw i8, ptr %156, i64 1296
  %392 = getelementptr inbounds nuw double, ptr %391, i64 %6
  store double %317, ptr %392, align 8, !tbaa !42
  %393 = load double, ptr %333, align 8, !tbaa !42
  %394 = fadd double %328, %393
  %395 = getelementptr inbounds nuw i8, ptr %156, i64 400
  %396 = getelementptr inbounds nuw double, ptr %395, i64 %6
  store double %394, ptr %396, align 8, !tbaa !42
  %397 = getelementptr inbounds nuw i8, ptr %156, i64 1392
  %398 = getelementptr inbounds nuw i8, ptr %156, i64 1600
  %399 = getelementptr inbounds nuw i8, ptr %156, i64 1616
  %400 = getelementptr inbounds nuw i8, ptr %156, i64 1808
  %401 = getelementptr inbounds nuw double, ptr %397, i64 %6
  store double %223, ptr %401, align 8, !tbaa !42
  %402 = getelementptr inbounds nuw double, ptr %398, i64 %6
  store double %223, ptr %402, align 8, !tbaa !42
  %403 = getelementptr inbounds nuw double, ptr %399, i64 %6
  store double %223, ptr %403, align 8, !tbaa !42
  %404 = getelementptr inbounds nuw double, ptr %400, i64 %6
  store double %223, ptr %404, align 8, !tbaa !42
  %405 = getelementptr inbounds nuw i8, ptr %156, i64 1408
  %406 = getelementptr inbounds nuw i8, ptr %156, i64 1424
  %407 = getelementptr inbounds nuw i8, ptr %156, i64 1824
  %408 = getelementptr inbounds nuw i8, ptr %156, i64 1792
  %409 = getelementptr inbounds nuw i8, ptr %156, i64 1712
  %410 = getelementptr inbounds nuw double, ptr %405, i64 %6
  store double 0.000000e+00, ptr %410, align 8, !tbaa !42
  %411 = getelementptr inbounds nuw double, ptr %406, i64 %6
  store double 0.000000e+00, ptr %411, align 8, !tbaa !42
  %412 = getelementptr inbounds nuw double, ptr %407, i64 %6
  store double 0.000000e+00, ptr %412, align 8, !tbaa !42
  %413 = getelementptr inbounds nuw double, ptr %408, i64 %6
  store double 0.000000e+00, ptr %413, align 8, !tbaa !42
  %414 = getelementptr inbounds nuw double, ptr %409, i64 %6
  store double 0.000000e+00, ptr %414, align 8, !tbaa !42
  %415 = getelementptr inbounds nuw i8, ptr %156, i64 1840
  %416 = getelementptr inbounds nuw i64, ptr %415, i64 %6
  store i64 0, ptr %416, align 8, !tbaa !30
  %417 = getelementptr inbounds nuw i8, ptr %156, i64 1856
  %418 = getelementptr inbounds nuw i64, ptr %417, i64 %6
  store i64 -1, ptr %418, align 8, !tbaa !30
  %419 = getelementptr inbounds nuw i8, ptr %156, i64 1872
  %420 = getelementptr inbounds nuw i64, ptr %419, i64 %6
  store i64 0, ptr %420, align 8, !tbaa !30
  br i1 %178, label %443, label %459

421:                                              ; preds = %276, %421
  %422 = phi i64 [ 0, %276 ], [ %441, %421 ]
  %423 = icmp slt i64 %422, %163
  %424 = select i1 %423, double %277, double 1.000000e+00
  %425 = shl nsw i64 %422, 6
  %426 = getelementptr inbounds nuw i8, ptr %280, i64 %425
  %427 = load double, ptr %426, align 8, !tbaa !42
  %428 = fmul double %424, %427
  store double %428, ptr %426, align 8, !tbaa !42
  %429 = fdiv double %424, %224
  %430 = getelementptr inbounds nuw i8, ptr %426, i64 16
  %431 = load double, ptr %430, align 8, !tbaa !42
  %432 = fmul double %429, %431
  store double %432, ptr %430, align 8, !tbaa !42
  %433 = fdiv double %429, %224
  %434 = getelementptr inbounds nuw i8, ptr %426, i64 32
  %435 = load double, ptr %434, align 8, !tbaa !42
  %436 = fmul double %433, %435
  store double %436, ptr %434, align 8, !tbaa !42
  %437 = fdiv double %433, %224
  %438 = getelementptr inbounds nuw i8, ptr %426, i64 48
  %439 = load double, ptr %438, align 8, !tbaa !42
  %440 = fmul double %437, %439
  store double %440, ptr %438, align 8, !tbaa !42
  %441 = add nuw nsw i64 %422, 1
  %442 = icmp slt i64 %422, %157
  br i1 %442, label %421, label %302, !llvm.loop !153

443:                                              ; preds = %302
  %444 = getelementptr inbounds nuw i8, ptr %156, i64 1912
  %445 = load ptr, ptr %444, align 8, !tbaa !56
  %446 = getelementptr inbounds nuw double, ptr %445, i64 %6
  %447 = getelementptr inbounds nuw i8, ptr %156, i64 1904
  %448 = load ptr, ptr %447, align 16, !tbaa !46
  %449 = getelementptr inbounds nuw double, ptr %448, i64 %6
  %450 = getelementptr inbounds nuw i8, ptr %156, i64 1896
  %451 = load ptr, ptr %450, align 8, !tbaa !57
  %452 = getelementptr inbounds nuw double, ptr %451, i64 %6
  %453 = getelementptr inbounds nuw i8, ptr %156, i64 1936
  %454 = load ptr, ptr %453, align 16, !tbaa !47
  %455 = getelementptr inbounds nuw double, ptr %454, i64 %6
  %456 = getelementptr inbounds nuw i8, ptr %156, i64 1928
  %457 = load ptr, ptr %456, align 8, !tbaa !64
  %458 = getelementptr inbounds nuw double, ptr %457, i64 %6
  br label %472

459:                                              ; preds = %472, %302
  %460 = icmp slt i64 %158, 0
  br i1 %460, label %533, label %461

461:                                              ; preds = %459
  %462 = getelementptr inbounds nuw i8, ptr %156, i64 2080
  %463 = load ptr, ptr %462, align 16, !tbaa !59
  %464 = getelementptr inbounds nuw double, ptr %463, i64 %6
  %465 = getelementptr inbounds nuw i8, ptr %156, i64 2072
  %466 = load ptr, ptr %465, align 8, !tbaa !49
  %467 = getelementptr inbounds nuw double, ptr %466, i64 %6
  %468 = icmp eq i64 %158, 0
  br i1 %468, label %481, label %469

469:                                              ; preds = %461
  %470 = add nuw i64 %158, 1
  %471 = and i64 %470, -2
  br label %506

472:                                              ; preds = %443, %472
  %473 = phi i64 [ 0, %443 ], [ %479, %472 ]
  %474 = getelementptr inbounds nuw <2 x double>, ptr %446, i64 %473
  store double %223, ptr %474, align 8, !tbaa !42
  %475 = getelementptr inbounds nuw <2 x double>, ptr %449, i64 %473
  store double %223, ptr %475, align 8, !tbaa !42
  %476 = getelementptr inbounds nuw <2 x double>, ptr %452, i64 %473
  store double %223, ptr %476, align 8, !tbaa !42
  %477 = getelementptr inbounds nuw <2 x double>, ptr %455, i64 %473
  store double 1.000000e+00, ptr %477, align 8, !tbaa !42
  %478 = getelementptr inbounds nuw <2 x double>, ptr %458, i64 %473
  store double 1.000000e+00, ptr %478, align 8, !tbaa !42
  %479 = add nuw nsw i64 %473, 1
  %480 = icmp eq i64 %479, %157
  br i1 %480, label %459, label %472, !llvm.loop !154

481:                                              ; preds = %520, %461
  %482 = phi i64 [ 0, %461 ], [ %524, %520 ]
  %483 = and i64 %158, 1
  %484 = icmp eq i64 %483, 0
  br i1 %484, label %485, label %493

485:                                              ; preds = %481
  %486 = icmp slt i64 %482, %158
  br i1 %486, label %489, label %487

487:                                              ; preds = %485
  %488 = load double, ptr %322, align 8, !tbaa !42
  br label %489

489:                                              ; preds = %487, %485
  %490 = phi double [ %488, %487 ], [ %317, %485 ]
  %491 = getelementptr inbounds nuw <2 x double>, ptr %464, i64 %482
  store double %490, ptr %491, align 8, !tbaa !42
  %492 = getelementptr inbounds nuw <2 x double>, ptr %467, i64 %482
  store double %490, ptr %492, align 8, !tbaa !42
  br label %493

493:                                              ; preds = %481, %489
  %494 = icmp eq i64 %158, 0
  br i1 %494, label %533, label %495

495:                                              ; preds = %493
  %496 = getelementptr inbounds nuw i8, ptr %156, i64 2032
  %497 = load ptr, ptr %496, align 16, !tbaa !61
  %498 = getelementptr inbounds nuw double, ptr %497, i64 %6
  %499 = getelementptr inbounds nuw i8, ptr %156, i64 2024
  %500 = load ptr, ptr %499, align 8, !tbaa !50
  %501 = getelementptr inbounds nuw double, ptr %500, i64 %6
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
  %511 = load double, ptr %322, align 8, !tbaa !42
  br label %512

512:                                              ; preds = %506, %510
  %513 = phi double [ %511, %510 ], [ %317, %506 ]
  %514 = getelementptr inbounds nuw <2 x double>, ptr %464, i64 %507
  store double %513, ptr %514, align 8, !tbaa !42
  %515 = getelementptr inbounds nuw <2 x double>, ptr %467, i64 %507
  store double %513, ptr %515, align 8, !tbaa !42
  %516 = or disjoint i64 %507, 1
  %517 = icmp slt i64 %516, %158
  br i1 %517, label %520, label %518

518:                                              ; preds = %512
  %519 = load double, ptr %322, align 8, !tbaa !42
  br label %520

520:                                              ; preds = %518, %512
  %521 = phi double [ %519, %518 ], [ %317, %512 ]
  %522 = getelementptr inbounds nuw <2 x double>, ptr %464, i64 %516
  store double %521, ptr %522, align 8, !tbaa !42
  %523 = getelementptr inbounds nuw <2 x double>, ptr %467, i64 %516
  store double %521, ptr %523, align 8, !tbaa !42
  %524 = add nuw i64 %507, 2
  %525 = add i64 %508, 2
  %526 = icmp eq i64 %525, %471
  br i1 %526, label %481, label %506, !llvm.loop !155

527:                                              ; preds = %537, %495
  %528 = phi i64 [ 0, %495 ], [ %545, %537 ]
  %529 = icmp eq i64 %502, 0
  br i1 %529, label %533, label %530

530:                                              ; preds = %527
  %531 = getelementptr inbounds nuw <2 x double>, ptr %498, i64 %528
  store double %223, ptr %531, align 8, !tbaa !42
  %532 = getelementptr inbounds nuw <2 x double>, ptr %501, i64 %528
  store double %223, ptr %532, align 8, !tbaa !42
  br label %533

533:                                              ; preds = %530, %527, %459, %493
  %534 = add nuw nsw i64 %155, 1
  %535 = load i64, ptr %27, align 8, !tbaa !20
  %536 = icmp slt i64 %534, %535
  br i1 %536, label %154, label %61, !llvm.loop !156

537:                                              ; preds = %537, %504
  %538 = phi i64 [ 0, %504 ], [ %545, %537 ]
  %539 = phi i64 [ 0, %504 ], [ %546, %537 ]
  %540 = getelementptr inbounds nuw <2 x double>, ptr %498, i64 %538
  store double %223, ptr %540, align 8, !tbaa !42
  %541 = getelementptr inbounds nuw <2 x double>, ptr %501, i64 %538
  store double %223, ptr %541, align 8, !tbaa !42
  %542 = or disjoint i64 %538, 1
  %543 = getelementptr inbounds nuw <2 x double>, ptr %498, i64 %542
  store double %223, ptr %543, align 8, !tbaa !42
  %544 = getelementptr inbounds nuw <2 x double>, ptr %501, i64 %542
  store double %223, ptr %544, align 8, !tbaa !42
  %545 = add nuw nsw i64 %538, 2
  %546 = add i64 %539, 2
  %547 = icmp eq i64 %546, %505
  br i1 %547, label %527, label %537, !llvm.loop !157
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(readwrite, inaccessiblemem: none)
define internal fastcc void @_ZL11enter_stageR5GroupRK3Jobi(ptr nocapture noundef nonnull align 16 dereferenceable(1536) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2) unnamed_addr #2 {
  %4 = alloca <2 x i64>, align 16
  %5 = getelementptr inbounds nuw i8, ptr %1, i64 88
  %6 = load ptr, ptr %5, align 8, !tbaa !158
  %7 = getelementptr inbounds nuw i8, ptr %1, i64 112
  %8 = load ptr, ptr %7, align 8, !tbaa !159
  %9 = getelementptr inbounds nuw i8, ptr %0, i64 1424
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
  %77 = getelementptr inbounds nuw i8, ptr %0, i64 1504
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
  %111 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  %235 = getelementptr inbounds nuw i8, ptr %0, i64 1408
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
  %253 = getelementptr inbounds nuw i8, ptr %0, i64 1528
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
  %274 = fadd <2 x double> %273, splat (double -1.000000e-03)
  %275 = fcmp ult <2 x double> %268, %274
  %276 = fsub <2 x double> %272, %271
  %277 = fadd <2 x double> %276, splat (double 1.000000e-03)
  %278 = fcmp ole <2 x double> %268, %277
  %279 = getelementptr inbounds nuw i8, ptr %0, i64 1392
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
  %289 = getelementptr inbounds nuw i8, ptr %0, i64 1408
  %290 = load <2 x i64>, ptr %289, align 16, !tbaa !26
  %291 = or <2 x i64> %284, %290
  store <2 x i64> %291, ptr %289, align 16, !tbaa !26
  call void @llvm.lifetime.end.p0(i64 16, ptr nonnull %4) #8
  br label %292

292:                                              ; preds = %264, %69
  ret void
}

; Function Attrs: mustprogress nofree norecurse nosync nounwind memory(read, argmem: readwrite, inaccessiblemem: none)
define internal fastcc noundef <2 x double> @_ZL4toldR5GroupRK3JobiDv2_x(ptr nocapture noundef nonnull align 16 dereferenceable(1536) %0, ptr nocapture noundef nonnull readonly align 8 dereferenceable(216) %1, i32 noundef range(i32 0, 2) %2, <2 x i64> noundef %3) unnamed_addr #4 {
  %5 = getelementptr inbounds nuw i8, ptr %0, i64 976
  %6 = load <2 x double>, ptr %5, align 16, !tbaa !26
  %7 = getelementptr inbounds nuw i8, ptr %0, i64 992
  %8 = load <2 x double>, ptr %7, align 16, !tbaa !26
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
  %89 = getelementptr inbounds nuw i8, ptr %0, i64 1432
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
!17 = !{!"_ZTS5Group", !18, i64 0, !6, i64 576, !6, i64 584, !6, i64 592, !6, i64 600, !6, i64 608, !6, i64 616, !7, i64 624, !7, i64 640, !7, i64 736, !7, i64 832, !7, i64 928, !7, i64 944, !7, i64 960, !7, i64 976, !7, i64 992, !7, i64 1008, !7, i64 1024, !7, i64 1040, !7, i64 1056, !7, i64 1072, !7, i64 1088, !7, i64 1104, !7, i64 1120, !7, i64 1136, !7, i64 1152, !7, i64 1168, !7, i64 1184, !7, i64 1200, !7, i64 1216, !7, i64 1232, !7, i64 1248, !7, i64 1264, !7, i64 1280, !7, i64 1296, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1488, !7, i64 1504, !11, i64 1520, !19, i64 1528}
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
!28 = !{!17, !19, i64 1528}
!29 = !{!5, !12, i64 152}
!30 = !{!6, !6, i64 0}
!31 = !{!32, !6, i64 1888}
!32 = !{!"_ZTS5Piece", !33, i64 0, !7, i64 736, !7, i64 928, !7, i64 1120, !7, i64 1312, !7, i64 1328, !7, i64 1344, !7, i64 1360, !7, i64 1376, !7, i64 1392, !7, i64 1408, !7, i64 1424, !7, i64 1440, !7, i64 1456, !7, i64 1472, !7, i64 1488, !7, i64 1504, !7, i64 1520, !7, i64 1536, !7, i64 1552, !7, i64 1568, !7, i64 1584, !7, i64 1600, !7, i64 1616, !7, i64 1632, !7, i64 1648, !7, i64 1664, !7, i64 1680, !7, i64 1696, !7, i64 1712, !7, i64 1728, !7, i64 1744, !7, i64 1760, !7, i64 1776, !7, i64 1792, !7, i64 1808, !7, i64 1824, !7, i64 1840, !7, i64 1856, !7, i64 1872, !6, i64 1888, !11, i64 1896, !11, i64 1904, !11, i64 1912, !11, i64 1920, !11, i64 1928, !11, i64 1936, !11, i64 1944, !11, i64 1952, !11, i64 1960, !11, i64 1968, !11, i64 1976, !11, i64 1984, !11, i64 1992, !11, i64 2000, !11, i64 2008, !11, i64 2016, !11, i64 2024, !11, i64 2032, !11, i64 2040, !11, i64 2048, !11, i64 2056, !11, i64 2064, !11, i64 2072, !11, i64 2080}
!33 = !{!"_ZTS10PieceGiven", !7, i64 0, !7, i64 16, !7, i64 32, !7, i64 48, !7, i64 64, !7, i64 80, !7, i64 96, !7, i64 112, !7, i64 128, !7, i64 144, !7, i64 160, !7, i64 176, !7, i64 192, !7, i64 208, !7, i64 224, !7, i64 240, !7, i64 256, !7, i64 272, !7, i64 288, !7, i64 304, !7, i64 320, !7, i64 336, !7, i64 352, !7, i64 368, !7, i64 384, !7, i64 400, !7, i64 416, !7, i64 432, !7, i64 448, !7, i64 464, !7, i64 480, !7, i64 496, !7, i64 512, !7, i64 528, !7, i64 544, !7, i64 560, !7, i64 576, !7, i64 592, !7, i64 608, !7, i64 624, !7, i64 640, !7, i64 656, !7, i64 672, !7, i64 688, !7, i64 704, !7, i64 720}
!34 = !{!11, !11, i64 0}
!35 = !{!32, !11, i64 2008}
!36 = distinct !{!36, !37}
!37 = !{!"llvm.loop.mustprogress"}
!38 = !{!17, !11, i64 1520}
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
